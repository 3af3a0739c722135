/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 1	67
# head 2	21
\$ head none	-117
's head 0	-39
's head none	110
( head none	25
) head none	-15
+ head 0	15
+ head 1	25
+ head none	31
, head 0	41
, head 1	26
, head none	21
- head 1	24
- head none	-73
-ed head 0	28
-ed head 1	35
-ed head none	33
-ing head 0	29
-ing head none	18
-ly head 0	-16
-ly head none	75
-s head 0	67
-s head 1	39
-s head 2	-29
-s head none	34
. head 0	37
. head 1	19
/ head none	-135
0 figures 1	15
0 l 	-26
0 l. #	-26
0 l. 1	-24
0 l. word	19
0 r 	-36
0 r. #	-36
0 r. word	-18
0 words round	-19
1 figures 1	48
1 head 0	32
1 head none	-84
1 l 
	-20
1 l +	21
1 l ,	60
1 l -	23
1 l .	31
1 l and	54
1 l another	-101
1 l at	42
1 l back	-18
1 l bath	-51
1 l be	42
1 l bottom	-57
1 l bought	69
1 l bring	59
1 l but	-38
1 l buy	71
1 l by	64
1 l cut	-29
1 l each	-49
1 l every	-100
1 l for	26
1 l fresh	-23
1 l get	76
1 l good	-32
1 l got	91
1 l grab	37
1 l had	57
1 l hall	46
1 l have	31
1 l he's	-16
1 l in	-35
1 l inch	65
1 l is	-16
1 l it	47
1 l just	73
1 l last	-102
1 l left	-71
1 l long	-17
1 l longer	-30
1 l me	47
1 l nd	-40
1 l need	58
1 l new	-98
1 l no	-30
1 l old	-87
1 l on	-20
1 l one	-15
1 l only	25
1 l order	32
1 l other	-101
1 l plus	57
1 l put	54
1 l reading	27
1 l red	43
1 l right	-42
1 l second	-43
1 l short	65
1 l so	16
1 l square	-45
1 l take	-31
1 l that	-109
1 l the	-178
1 l there's	39
1 l this	-47
1 l type	-36
1 l up	23
1 l used	21
1 l wait	-51
1 l want	65
1 l wants	27
1 l was	40
1 l what	-38
1 l wrong	-26
1 l. +	21
1 l. ,	60
1 l. -	23
1 l. -ed	-16
1 l. -ing	-50
1 l. .	31
1 l. /	-20
1 l. one	-19
1 l. word	-35
1 parts	73
1 r 	29
1 r 
	21
1 r )	-25
1 r -	-36
1 r .	-63
1 r 3	33
1 r 4	17
1 r :	-19
1 r and	-17
1 r at	-36
1 r b	17
1 r before	22
1 r belt	-23
1 r bracket	44
1 r cracked	59
1 r door	21
1 r down	-30
1 r eight	18
1 r end	-40
1 r filter	16
1 r from	-25
1 r gasket	22
1 r get	-30
1 r goes	-28
1 r hand	-42
1 r has	-45
1 r head	32
1 r here	30
1 r hit	-45
1 r i	-27
1 r is	-43
1 r it's	-21
1 r kitchen	23
1 r late	-19
1 r leg	-35
1 r missing	32
1 r new	53
1 r nine	16
1 r of	-248
1 r off	72
1 r old	29
1 r on	24
1 r out	-30
1 r over	-16
1 r panel	-65
1 r reads	-18
1 r reducer	31
1 r ring	43
1 r sec	-23
1 r seven	21
1 r shelf	-30
1 r shot	-23
1 r side	-24
1 r so	-37
1 r spare	24
1 r they	-18
1 r thing	-25
1 r three	16
1 r time	-20
1 r to	-77
1 r towel	22
1 r two	-17
1 r was	-30
1 r wax	20
1 r way	-24
1 r wednesday	38
1 r when	18
1 r white	20
1 r with	-25
1 r you	32
1 r. #	29
1 r. )	-25
1 r. -	-36
1 r. -ing	48
1 r. -s	-93
1 r. .	-63
1 r. /	21
1 r. 1	94
1 r. :	-19
1 r. one	23
1 r. word	-34
1 words	-59
12 0figures 2	-20
12 figures 1	-25
12 l 	36
12 l 
	-44
12 l .	-17
12 l :	58
12 l a	20
12 l after	-38
12 l all	67
12 l and	32
12 l apartment	-27
12 l around	-40
12 l at	-121
12 l back	-20
12 l bay	-28
12 l before	-29
12 l between	-19
12 l bout	42
12 l box	-22
12 l breaker	-43
12 l bring	16
12 l buy	20
12 l by	26
12 l cat	-16
12 l ch	-25
12 l channel	-34
12 l circuit	-74
12 l cloud	-17
12 l counted	18
12 l cut	46
12 l detail	-19
12 l door	-20
12 l e	-24
12 l every	23
12 l exit	-22
12 l flat	-30
12 l floor	-40
12 l for	18
12 l four	-19
12 l garage	58
12 l get	22
12 l got	57
12 l grab	33
12 l hang	17
12 l house	-46
12 l hung	59
12 l is	38
12 l it	77
12 l it's	-47
12 l its	-40
12 l keynote	-29
12 l last	37
12 l least	57
12 l leaves	53
12 l line	-39
12 l lot	-39
12 l maybe	30
12 l need	75
12 l needs	52
12 l nine	-18
12 l not	23
12 l number	-98
12 l number's	-20
12 l of	16
12 l order	-29
12 l ought	-37
12 l out	37
12 l over	-21
12 l page	-17
12 l past	-53
12 l port	-29
12 l poured	29
12 l pulling	21
12 l ran	62
12 l reading	-43
12 l replaced	22
12 l riser	-54
12 l rm	-25
12 l road	-21
12 l run	54
12 l saves	-37
12 l sent	31
12 l set	-33
12 l sheet	-23
12 l six	18
12 l so	35
12 l solid	-25
12 l step	-28
12 l table	-25
12 l take	49
12 l that's	-26
12 l the	38
12 l there's	18
12 l through	-28
12 l til	-33
12 l took	27
12 l tread	-26
12 l truck	-21
12 l unit	-80
12 l up	52
12 l us	54
12 l used	33
12 l was	-17
12 l we're	50
12 l wire's	24
12 l x	39
12 l zone	-23
12 l. #	36
12 l. -ed	76
12 l. .	-17
12 l. /	-44
12 l. :	58
12 l. Name	-45
12 l. one	-32
12 parts	58
12 r 
	-31
12 r )	-32
12 r -	-18
12 r .	28
12 r 1	-22
12 r :	-56
12 r a	21
12 r anchors	39
12 r angry	-37
12 r at	38
12 r b	-46
12 r baby	19
12 r bad	-29
12 r boards	25
12 r bottom	21
12 r bucks	-25
12 r by	65
12 r come	-16
12 r dead	35
12 r deep	52
12 r done	44
12 r door	-39
12 r doors	55
12 r double	17
12 r down	28
12 r downstairs	19
12 r drops	40
12 r eight	-27
12 r elbows	22
12 r fifty	-21
12 r footings	16
12 r for	57
12 r four	-16
12 r from	-27
12 r gets	-22
12 r got	-22
12 r hangers	38
12 r has	-18
12 r heads	16
12 r here	34
12 r high	20
12 r hinges	22
12 r hole	-54
12 r i	19
12 r in	-48
12 r instead	34
12 r is	-29
12 r it	-20
12 r last	-22
12 r left	63
12 r lives	-31
12 r long	-20
12 r more	51
12 r needs	-53
12 r no	-43
12 r notice	-52
12 r o'clock	-42
12 r of	49
12 r off	17
12 r old	-35
12 r on	17
12 r openings	24
12 r or	-19
12 r out	-61
12 r outlets	19
12 r over	21
12 r panel	-42
12 r rooms	21
12 r says	-24
12 r sharp	-34
12 r shift	-55
12 r short	46
12 r shows	-32
12 r so	35
12 r studs	54
12 r the	29
12 r then	36
12 r this	-16
12 r tiles	25
12 r till	-20
12 r times	-41
12 r tomorrow	-44
12 r wants	-20
12 r was	-32
12 r waste	25
12 r we	-19
12 r when	-26
12 r work	34
12 r x	22
12 r. 's	59
12 r. )	-32
12 r. -	-18
12 r. -ed	37
12 r. -ing	33
12 r. -s	45
12 r. .	28
12 r. /	-31
12 r. :	-56
12 r. Name	-35
12 r. one	-82
12 words	20
12 words round	-22
2 l 	32
2 l 
	-39
2 l (	36
2 l +	25
2 l ,	24
2 l -	-30
2 l .	22
2 l a	-19
2 l about	33
2 l addendum	-15
2 l and	-29
2 l another	28
2 l at	-77
2 l back	41
2 l bath	-46
2 l bay	-72
2 l be	23
2 l bed	-29
2 l bedroom	-76
2 l bought	37
2 l bring	53
2 l buy	49
2 l by	15
2 l coat	-25
2 l count	-28
2 l day	-72
2 l drawer	-38
2 l drove	-15
2 l flat	-43
2 l for	40
2 l fourteen	-16
2 l get	44
2 l gets	39
2 l got	-49
2 l have	30
2 l header's	23
2 l in	-32
2 l it	37
2 l it's	42
2 l maybe	65
2 l me	-55
2 l need	41
2 l needs	17
2 l number	-60
2 l of	-66
2 l one	-24
2 l order	25
2 l other	21
2 l press	-19
2 l put	15
2 l ran	59
2 l says	-32
2 l so	32
2 l t	-20
2 l takes	-28
2 l the	63
2 l then	-28
2 l there's	-57
2 l took	23
2 l two	27
2 l type	-21
2 l up	46
2 l us	-41
2 l use	18
2 l used	16
2 l wants	42
2 l with	25
2 l zone	-25
2 l. #	32
2 l. 's	70
2 l. (	36
2 l. +	25
2 l. ,	24
2 l. -	-30
2 l. .	22
2 l. /	-39
2 l. 1	28
2 l. letter	-19
2 l. one	-23
2 l. unit	-69
2 parts	34
2 r ,	-27
2 r -	-35
2 r 3	-21
2 r :	-49
2 r a	-46
2 r at	75
2 r can	-47
2 r cents	-31
2 r clamps	18
2 r couplings	24
2 r don't	63
2 r doors	57
2 r fall	37
2 r five	31
2 r for	16
2 r gang	-76
2 r guys	-59
2 r had	-25
2 r half	28
2 r high	30
2 r hinges	22
2 r i'm	-19
2 r in	57
2 r is	-34
2 r left	62
2 r man	-32
2 r more	61
2 r need	26
2 r new	16
2 r nil	-30
2 r no	15
2 r nos	18
2 r o'clock	-27
2 r of	61
2 r one	-45
2 r out	49
2 r panel	-50
2 r part	-58
2 r pole	-21
2 r screws	34
2 r shakes	-41
2 r short	-23
2 r sides	-27
2 r slope	25
2 r so	20
2 r supply	18
2 r the	-42
2 r then	33
2 r times	-31
2 r to	71
2 r tomorrow	-25
2 r twenty	17
2 r two	23
2 r we	-19
2 r window	-44
2 r windows	39
2 r wrongs	-47
2 r x	-16
2 r. 's	-15
2 r. ,	-27
2 r. -	-35
2 r. -ed	-33
2 r. -ing	-42
2 r. -ly	18
2 r. 1	15
2 r. :	-49
2 r. letter	-31
2 r. n't	31
2 r. one	77
20 figures 2	21
20 l ,	28
20 l .	-27
20 l a	54
20 l all	26
20 l and	27
20 l at	43
20 l code	-16
20 l counted	20
20 l every	55
20 l for	-36
20 l got	54
20 l has	15
20 l house	-46
20 l in	-43
20 l is	76
20 l item	-25
20 l like	-21
20 l lot	-18
20 l maybe	25
20 l me	-19
20 l of	18
20 l on	-22
20 l r	-73
20 l read	31
20 l reading	22
20 l says	56
20 l set	57
20 l side	18
20 l so	31
20 l sweet	-31
20 l that's	-30
20 l the	-32
20 l two	28
20 l under	31
20 l used	31
20 l wants	-35
20 l. ,	28
20 l. -ing	58
20 l. .	-27
20 l. letter	-66
20 l. unit	40
20 l. word	33
20 parts	39
20 r 	19
20 r -	-15
20 r .	43
20 r at	29
20 r before	19
20 r bucks	-46
20 r by	42
20 r centers	35
20 r clips	27
20 r down	-71
20 r even	21
20 r for	-18
20 r hung	24
20 r i	31
20 r more	20
20 r ninety	-34
20 r ninth	-24
20 r oc	43
20 r of	50
20 r off	-30
20 r on	16
20 r risers	20
20 r second	-32
20 r the	-18
20 r to	16
20 r total	23
20 r treads	33
20 r twelve	-28
20 r twenty	-28
20 r two	-41
20 r we	28
20 r. #	19
20 r. 's	32
20 r. -	-15
20 r. -s	36
20 r. .	43
20 r. letter	27
20 r. one	-111
20 r. word	28
20 words round	-20
5 l 	34
5 l 
	-58
5 l ,	74
5 l :	16
5 l a	-37
5 l about	-46
5 l after	-18
5 l and	19
5 l another	35
5 l apt	-26
5 l at	-83
5 l bath	-16
5 l bay	-46
5 l be	55
5 l bed	-43
5 l bedroom	-23
5 l bring	26
5 l by	-45
5 l code	-41
5 l cure	20
5 l cut	25
5 l day	-58
5 l dock	-28
5 l door	-49
5 l fan	46
5 l five	-26
5 l flat	-59
5 l for	42
5 l found	25
5 l get	43
5 l gets	23
5 l got	26
5 l had	-24
5 l has	48
5 l have	35
5 l here	-16
5 l in	59
5 l it	52
5 l it's	-26
5 l kitchen	35
5 l lane	-30
5 l last	26
5 l leaves	16
5 l left	39
5 l level	-40
5 l loop	-48
5 l lvl	-34
5 l me	39
5 l missing	16
5 l mode	-57
5 l need	38
5 l no	-21
5 l not	53
5 l number	-53
5 l of	-21
5 l on	-22
5 l only	56
5 l or	18
5 l other	77
5 l out	59
5 l over	81
5 l paid	-22
5 l par	-22
5 l put	35
5 l replaced	21
5 l rev	-25
5 l room	-64
5 l says	35
5 l shelf	-32
5 l short	42
5 l slab	15
5 l so	32
5 l step	-16
5 l strike	-21
5 l switch	-33
5 l that	33
5 l that's	23
5 l the	-41
5 l till	-36
5 l took	19
5 l truck	-19
5 l twelve	-21
5 l two	-17
5 l type	-18
5 l unit	-53
5 l up	35
5 l us	50
5 l use	19
5 l used	37
5 l wall	26
5 l want	51
5 l wants	42
5 l was	44
5 l with	16
5 l x	20
5 l zone	-58
5 l. #	28
5 l. 's	-35
5 l. ,	74
5 l. -ed	48
5 l. -ing	18
5 l. -s	77
5 l. /	-61
5 l. :	16
5 l. Name	-51
5 l. one	-61
5 l. unit	-47
5 r )	-48
5 r -	-48
5 r 2	37
5 r :	-28
5 r aa	18
5 r amigos	-40
5 r are	22
5 r at	27
5 r b	-18
5 r baths	36
5 r batts	-46
5 r before	25
5 r blinds	25
5 r brackets	36
5 r bulbs	24
5 r business	-34
5 r but	51
5 r by	-33
5 r came	-29
5 r closets	39
5 r dead	25
5 r digits	-23
5 r doors	-28
5 r extra	63
5 r for	50
5 r four	-46
5 r guys	-43
5 r had	-23
5 r has	-20
5 r hinges	24
5 r hole	-37
5 r hooks	48
5 r in	53
5 r is	-73
5 r layers	40
5 r left	36
5 r lights	26
5 r more	78
5 r nail	33
5 r o'clock	-49
5 r oclock	-29
5 r of	88
5 r on	-48
5 r outlets	48
5 r over	20
5 r per	59
5 r pulls	16
5 r says	-41
5 r screens	52
5 r should	24
5 r slake	36
5 r spaces	31
5 r square	-15
5 r stars	-56
5 r still	59
5 r the	-74
5 r then	-17
5 r they	17
5 r things	-52
5 r three	24
5 r tile	39
5 r times	-85
5 r to	16
5 r today	-32
5 r tomorrow	-42
5 r tripped	-27
5 r twenty	19
5 r way	-69
5 r weekend	-44
5 r went	41
5 r will	30
5 r windows	26
5 r with	-17
5 r won't	25
5 r x	31
5 r. 's	-24
5 r. )	-48
5 r. -	-48
5 r. -ing	15
5 r. -s	38
5 r. :	-28
5 r. one	-35
5 r. unit	30
60 figures 2	16
60 l 	-27
60 l \$	-38
60 l -	-60
60 l a	38
60 l about	-31
60 l after	18
60 l are	25
60 l at	91
60 l breaker	-22
60 l by	39
60 l cut	33
60 l dry	38
60 l error	-35
60 l from	33
60 l get	18
60 l got	38
60 l he's	-67
60 l house	83
60 l in	-27
60 l is	44
60 l it	-20
60 l lot	-27
60 l maybe	-27
60 l me	22
60 l need	30
60 l needs	18
60 l net	-42
60 l no	21
60 l not	51
60 l number	-73
60 l of	18
60 l off	-32
60 l on	24
60 l ordered	23
60 l plate	41
60 l po	-17
60 l put	-34
60 l r	-18
60 l reading	20
60 l say	39
60 l says	32
60 l set	30
60 l side	33
60 l so	18
60 l through	44
60 l to	56
60 l traffic	-30
60 l up	-69
60 l wall	25
60 l want	21
60 l wants	43
60 l was	34
60 l x	41
60 l. #	-27
60 l. \$	-38
60 l. 's	41
60 l. -	-60
60 l. -ing	53
60 l. -ly	23
60 l. 1	-25
60 l. one	-42
60 l. unit	48
60 l. word	40
60 r .	44
60 r all	50
60 r at	46
60 r before	32
60 r blocks	33
60 r boards	25
60 r brick	23
60 r bucks	-41
60 r card	-16
60 r chance	-35
60 r dollars	-40
60 r down	71
60 r fifty	-35
60 r from	-24
60 r high	46
60 r i	25
60 r if	-20
60 r miles	-34
60 r not	39
60 r oc	28
60 r of	28
60 r on	-54
60 r or	-40
60 r pavers	33
60 r pulls	23
60 r so	31
60 r that	20
60 r the	-16
60 r then	30
60 r they	18
60 r thick	27
60 r to	-39
60 r up	18
60 r week	-29
60 r which	16
60 r wide	40
60 r with	-19
60 r x	18
60 r. 's	16
60 r. -ing	-16
60 r. -s	-22
60 r. .	44
60 r. /	42
60 r. 1	-25
60 r. letter	28
60 r. one	-90
60 r. word	46
60 words	16
99 figures 2	44
99 l \$	-55
99 l -	21
99 l a	-46
99 l an	-58
99 l and	21
99 l at	63
99 l by	20
99 l doing	-19
99 l for	-35
99 l from	-16
99 l got	-41
99 l humidity's	33
99 l is	-32
99 l of	-39
99 l only	25
99 l over	-26
99 l past	45
99 l reading	21
99 l return	17
99 l says	-34
99 l that	-37
99 l to	37
99 l under	27
99 l was	50
99 l wide	17
99 l with	-15
99 l. \$	-55
99 l. 's	18
99 l. -	21
99 l. -ing	30
99 l. -ly	54
99 l. -s	-18
99 l. one	-41
99 l. word	18
99 parts	-52
99 r ,	48
99 r -	26
99 r before	29
99 r bucks	-24
99 r by	21
99 r for	-21
99 r is	-34
99 r next	-40
99 r of	26
99 r on	34
99 r or	31
99 r out	32
99 r so	32
99 r to	-38
99 r. ,	48
99 r. -	26
99 r. -ed	-28
99 r. -s	-60
99 r. one	-16
99 r. unit	-16
99 r. word	16
99 words	15
999 0figures 4	-60
999 l 	-32
999 l \$	-42
999 l ,	-21
999 l -	-27
999 l .	23
999 l 555	-17
999 l a	-31
999 l about	62
999 l and	71
999 l at	39
999 l be	23
999 l by	24
999 l extension	-16
999 l f	-18
999 l for	28
999 l from	30
999 l going	44
999 l in	-52
999 l it	-53
999 l it's	18
999 l laid	51
999 l lot	-21
999 l no	37
999 l of	-27
999 l on	-19
999 l out	39
999 l reading	23
999 l reads	32
999 l rise	35
999 l rm	-41
999 l room	-44
999 l section	-29
999 l set	32
999 l side's	32
999 l suite	-29
999 l that's	32
999 l the	-76
999 l there	-48
999 l there's	28
999 l to	47
999 l two	36
999 l wants	17
999 l was	-20
999 l. #	-33
999 l. \$	-42
999 l. 's	43
999 l. ,	-21
999 l. -	-27
999 l. -ing	43
999 l. -s	82
999 l. .	23
999 l. 1	-49
999 l. one	16
999 l. unit	-19
999 oh	-43
999 r ,	25
999 r -	-55
999 r .	28
999 r 555	-24
999 r :	-24
999 r a	-56
999 r across	24
999 r agree	-39
999 r already	-22
999 r area	-43
999 r at	-15
999 r before	-32
999 r block	-16
999 r bucks	-35
999 r centres	27
999 r crew	-22
999 r deep	23
999 r down	24
999 r for	-58
999 r going	65
999 r high	56
999 r i	25
999 r not	24
999 r number	-22
999 r of	88
999 r off	55
999 r on	19
999 r one	31
999 r out	-17
999 r over	-54
999 r screws	42
999 r the	34
999 r to	49
999 r two	-18
999 r when	-19
999 r wide	17
999 r x	22
999 r. ,	25
999 r. -	-55
999 r. -s	16
999 r. .	28
999 r. 1	-58
999 r. :	-24
999 r. letter	44
999 r. unit	-58
999 r. word	26
999 swallowed	-21
999 swallowed round	-21
999 words	73
999 words round	33
9999 figures 4	-48
9999 figures 5	-23
9999 l 	-20
9999 l ,	-35
9999 l at	112
9999 l for	-28
9999 l from	-44
9999 l in	-19
9999 l is	-25
9999 l switch	-26
9999 l the	-19
9999 l to	17
9999 l. #	-20
9999 l. 's	61
9999 l. ,	-35
9999 l. unit	-18
9999 l. word	-23
9999 r 	-17
9999 r in	-25
9999 r long	48
9999 r so	20
9999 r the	23
9999 r to	29
9999 r x	15
9999 r. #	-17
9999 r. letter	15
9999 r. unit	-27
9999 words	-28
9999 words round	32
: head 0	40
: head 1	27
: head none	45
< head none	17
Name head none	-113
a a	-42
a aa	26
a about	-58
a across	25
a adds	-53
a aff	19
a agree	-39
a ain't	38
a alder	-28
a all	-43
a along	50
a also	53
a amigos	-40
a an	-40
a anchor	18
a anchors	50
a and	41
a angry	-37
a another	-45
a anyone	-42
a anything	32
a apart	69
a app	-22
a are	51
a area	-16
a as	-42
a ask	-27
a at	31
a ave	-16
a away	-57
a b	-48
a baby	-29
a back	64
a backs	-45
a bad	-36
a bag	15
a ball	15
a balusters	-21
a banksia	-29
a bar	25
a bars	41
a base	49
a basement	-15
a bases	-22
a bath	43
a bathroom	-27
a baths	43
a batts	-37
a bay	-42
a be	55
a bead	18
a beam	22
a bearing	20
a bedroom	-24
a before	22
a behind	40
a below	32
a between	18
a bin	23
a birch	-45
a bit	21
a black	62
a blade	19
a blades	38
a blank	22
a blind	-21
a block	17
a blocks	78
a blue	-37
a boards	72
a bolt	44
a bolts	50
a boots	-20
a bottom	51
a bought	61
a boxes	36
a bracket	34
a brackets	45
a brass	70
a brick	34
a broken	43
a brown	27
a brushes	26
a bucks	-58
a buddy	-18
a built	-46
a bulbs	39
a bullnose	-17
a bumpers	34
a buried	19
a burned	42
a bushing	25
a business	-55
a but	33
a buy	18
a buzzer	-45
a buzzes	-20
a by	34
a c	-33
a cable	-48
a call	-40
a calling	-39
a came	35
a can	73
a can't	-51
a cans	56
a cap	49
a caps	24
a card	-17
a care	-36
a carpet	-19
a carton	-22
a case	35
a casing	29
a caulk	43
a ceiling	33
a center	74
a centers	67
a centre	34
a centres	33
a cents	-40
a chance	-45
a chimney	49
a chipped	68
a circuit	29
a city	-56
a clamps	41
a clean	24
a clear	75
a client	-30
a clips	82
a closed	56
a closet	49
a closets	26
a coat	-42
a code	66
a coffee	33
a coil	32
a cold	28
a color	-16
a colour	-18
a come	-17
a comes	-37
a coming	27
a complaining	-24
a complete	-39
a concrete	-35
a contact	22
a cord	-23
a corner	61
a cost	-26
a could	-32
a count	48
a counter	-20
a countertop	-27
a couplings	46
a court	-17
a cove	20
a cover	31
a covers	-18
a crack	-30
a cracked	89
a crew	-100
a cuts	17
a d	-19
a damaged	35
a dash	-26
a day	-75
a days	-72
a dead	46
a deal	-41
a decks	32
a deep	102
a degree	22
a delivered	17
a den	25
a dentists	-84
a digits	-23
a disposal	-55
a does	-25
a doesn't	-18
a doing	-51
a dollar	-67
a dollars	-59
a don't	-18
a dont	-18
a door's	34
a doors	40
a dot	-37
a double	19
a down	-21
a downstairs	19
a dozen	-85
a drain	20
a drawer	-30
a drip	67
a driveway	-22
a drops	49
a dry	30
a dryer	-20
a dumpster	-30
a duplex	17
a each	56
a east	-16
a easy	-32
a edge	59
a eggshell	51
a eight	16
a eighteen	35
a eighths	-16
a eights	37
a eighty	-30
a either	-36
a elbows	67
a eleventh	-40
a elm	-38
a elsewhere	42
a em	73
a empty	-24
a end	36
a ends	51
a enough	20
a euro	-88
a even	48
a every	25
a everybody	-68
a everywhere	-37
a except	34
a excuses	-39
a exit	-16
a expansion	24
a extra	40
a faced	-24
a factory	23
a fall	38
a falls	-33
a family	15
a fan	26
a fan's	31
a fans	18
a far	60
a faucet	-27
a fault	-50
a fella	-24
a fence	24
a field	41
a fifteen	-17
a fifteens	21
a fifty	25
a filter	43
a find	-53
a fine	32
a fingers	-29
a finish	-27
a finished	23
a first	21
a fit	30
a fix	-66
a fixed	-32
a flapper	-47
a flashing	41
a flat	58
a flex	-39
a flicker	37
a flood	26
a floor	-16
a flush	-26
a foam	-38
a foot	76
a footers	57
a footings	25
a for	34
a forget	-21
a forgets	-19
a forty	16
a fours	24
a fourteen	28
a framed	-45
a friday	37
a fridays	-36
a front	43
a frost	-30
a ft	-35
a full	55
a furnace	-45
a g	19
a gallon	-36
a game	-26
a gang	-57
a garage	41
a gary	31
a gasket	28
a gauge	37
a get	-56
a gets	-34
a gfcis	37
a give	72
a glass	56
a glue	-17
a glued	-23
a go	46
a god	-20
a gone	-26
a gonna	24
a good	61
a got	16
a gotta	-32
a grade	59
a grate	-46
a grease	-22
a green	15
a grille	-73
a grit	23
a ground	-41
a grout	61
a gun	-31
a guy	-52
a guys	-97
a had	-16
a hall	119
a hand	-34
a handle	-84
a hangers	104
a hanging	21
a happy	30
a hardware	17
a has	-96
a hasn't	-17
a hatch	-18
a have	21
a he	-46
a he's	-84
a head	-62
a headed	-27
a heads	56
a heater	23
a heavy	25
a held	-32
a helpers	-22
a her	17
a hes	-25
a high	64
a him	-57
a hinge	21
a hire	-30
a his	-17
a holding	24
a hole	-79
a hooks	45
a hot	29
a hour	-23
a hours	-31
a house	34
a how	-20
a hums	-55
a hundred	23
a hundreds	-36
a hydro	-38
a i	-56
a i'm	-21
a i've	44
a ice	-20
a if	-28
a in	23
a inch	32
a inches	44
a inspector	-16
a instead	46
a into	29
a invoice	-35
a iron	-37
a is	-53
a ish	-38
a island	-34
a it'd	-16
a it'll	-27
a it's	-53
a job	-45
a joist	24
a july	-55
a junction	17
a just	21
a keep	16
a keeps	-25
a key	-53
a kid	-20
a killed	-25
a kind	17
a kinds	-56
a kit	55
a kitchen	29
a knob	-16
a knobs	41
a knocked	-27
a label	17
a labeled	35
a ladder	-19
a ladders	20
a laid	42
a lamp	26
a landing	52
a laptop	-22
a larch	-33
a large	17
a laser	44
a last	-33
a late	-76
a latest	-60
a lath	-16
a lavs	35
a lay	43
a layer	-68
a layers	40
a lazy	-22
a lead	27
a leaking	24
a leaks	-16
a left	71
a leg	76
a legs	60
a length	25
a level	-26
a lever	27
a lid	43
a lift	-64
a light	38
a lights	29
a like	-72
a lime	26
a line	-32
a list	-30
a litre	38
a live	19
a lives	-31
a ln	-21
a lol	-20
a long	93
a longer	19
a look	-26
a looks	-58
a loose	26
a lot	-74
a lower	17
a luck	-47
a lunch	-17
a m10	17
a mailbox	-25
a make	-38
a man	-17
a manifold	17
a manual	-28
a maple	-46
a march	-18
a master	15
a mate	-61
a matt	32
a max	59
a me	-22
a men	-37
a metal	-48
a meter	41
a middle	66
a miles	-34
a mill	-33
a minimum	38
a minutes	-16
a mirror	-38
a missing	18
a mix	55
a moisture	24
a mon	41
a monday	-49
a more	73
a morning	-35
a mosaic	22
a move	42
a moved	-67
a moves	-46
a muppet	-31
a must	-19
a n	22
a nails	45
a need	43
a needs	-57
a new	37
a next	-37
a night	-72
a nil	-30
a nine	-58
a ninety	23
a no	-29
a nobody'll	-33
a noon	-42
a north	35
a nos	35
a nose	33
a not	-28
a nothing	-51
a notice	-79
a number	19
a nuts	54
a o	-15
a o'clock	-80
a oc	63
a oclock	-45
a off	27
a office	-29
a offset	-32
a oh	-29
a ok	-36
a once	-29
a ones	24
a open	22
a opened	19
a opening	51
a openings	24
a order	46
a ordered	30
a other	-59
a ought	26
a outlets	66
a outside	-39
a oven	20
a over	17
a own	22
a packers	-67
a pad	15
a paint	37
a painters	-18
a painting	26
a palings	20
a pan	32
a panel	-56
a panels	52
a paper	-44
a park	-30
a part	-58
a parts	-25
a pascals	23
a pass	-32
a passed	-24
a past	-67
a pattern	-52
a pavers	51
a pay	-34
a pendants	54
a people	-21
a per	83
a pickets	20
a piece	23
a pieces	17
a piers	27
a pinched	-30
a pine	43
a pinned	20
a pins	17
a pipe	29
a place	-36
a planks	17
a plaster	24
a plate	48
a plates	54
a play	-45
a plenty	58
a plumber	-27
a ply	18
a plywood	34
a pm	-18
a podium	-68
a point	-23
a pole	-45
a pop	-25
a poplar	16
a porch	22
a post	38
a potato	-57
a powder	-17
a primer	48
a proud	24
a pulled	-29
a pulls	49
a pump	34
a punch	-18
a punched	-17
a quarter	-21
a quid	-42
a quiet	-32
a quit	-30
a rack	16
a radiator	17
a radio	-92
a rafters	53
a rail	27
a rain	-79
a raise	47
a ran	32
a rang	-33
a range	-45
a reads	-31
a ready	-52
a rear	-29
a receps	18
a receptacle	21
a receptacles	49
a red	19
a reducer	55
a remain	18
a replaced	-22
a required	-25
a reset	-23
a return's	23
a ridge	26
a ring	31
a rise	24
a riser	26
a risers	44
a rock	31
a roll	-18
a rolled	-20
a roller	20
a roof	-35
a room	32
a rooms	21
a rotten	17
a rough	16
a rubber	27
a run	35
a running	60
a runs	-16
a safe	52
a sags	-28
a said	-66
a sand	34
a satin	37
a says	-47
a school	-17
a sconces	38
a score	-23
a scratched	24
a screen	58
a screens	55
a screwed	24
a screws	69
a sealed	29
a season	-20
a sec	-23
a second	-80
a send	-28
a sent	16
a series	-18
a set	26
a seven	-17
a seventeen	-19
a seventh	-42
a seventy	58
a shakes	-36
a sharp	-48
a she	26
a she's	-26
a shed	44
a sheet	-20
a sheets	38
a shelf	45
a shift	-59
a shims	30
a shingles	17
a short	90
a should	31
a show	-19
a showed	-36
a shower	-41
a shows	-22
a shut	-33
a side	33
a signed	-49
a silicone	-32
a sill	32
a since	-30
a single	15
a sink	50
a sister	31
a site	31
a sits	-23
a six	29
a sixes	-27
a sixteen	77
a sixteenths	-39
a skip	-27
a slab	38
a slabs	-31
a slake	36
a slats	-32
a slope	82
a slow	-39
a smoke	16
a so	32
a sockets	-19
a sold	-19
a some	35
a somebody's	43
a something	-39
a sorry	-27
a sound	-21
a south	23
a space	42
a spacer	-19
a spacers	23
a spaces	31
a spare	33
a split	-18
a spot	26
a spout	28
a spring	-47
a square	-24
a squeaks	43
a st	-32
a stainless	27
a star	-22
a stars	-56
a starts	-23
a state	-32
a station	20
a step	-41
a steps	17
a stick	29
a still	-34
a stock	38
a stone	-39
a stool	-43
a stopper	19
a stops	-35
a store	21
a storm	-17
a story	-22
a straight	-34
a straps	22
a strike	26
a stripped	16
a stroke	-20
a stud	34
a studs	105
a style	15
a suction	31
a sunday	-52
a supplier	-29
a supply	41
a sure	-25
a sweep	40
a switch	66
a switches	16
a tag	-25
a take	22
a takes	16
a tall	39
a tap	67
a tape	40
a taped	17
a tee	32
a telling	-25
a template	-30
a tens	35
a tested	-24
a thank	-16
a that	-18
a that's	-16
a them	25
a there	-23
a there's	-32
a theres	33
a these	38
a they	-51
a they're	60
a thick	59
a thing	-80
a things	-84
a think	-32
a thinset	33
a this	-34
a those	-24
a thousand	-50
a through	-15
a throughout	18
a thumb	-34
a tied	-16
a ties	-31
a tight	-17
a tile	72
a tile's	46
a tiles	60
a times	-146
a to	24
a today	-16
a toe	-30
a together	-61
a toggles	27
a toilet	47
a toilets	42
a told	-68
a tomorrow	-23
a tonight	20
a too	-64
a took	-26
a top	22
a torn	-17
a total	51
a touch	-32
a touched	-22
a towel	40
a traffic	-22
a traps	27
a travelers	-19
a tray	-24
a tread	-48
a treads	49
a treated	-21
a trees	23
a trip	22
a tripped	-36
a tub	45
a tube	71
a tuesday	-42
a turn	-22
a turned	-36
a twelve	19
a twelves	26
a twenty	27
a two	28
a twos	39
a type	27
a u	-35
a under	-17
a unless	-24
a until	38
a up	34
a upper	23
a us	-76
a usb	18
a use	18
a used	56
a v	-28
a valve	31
a van	42
a vanities	18
a vanity	-29
a vent	21
a vents	-17
a vinyl	37
a volt	26
a w	32
a wafers	17
a walk	-16
a wall	67
a walls	20
a want	36
a wanted	18
a wants	-19
a was	-34
a washer	-18
a washers	29
a waste	50
a watch	-19
a water	-63
a watt	41
a way	-79
a ways	-64
a we	28
a wear	-33
a wednesday	30
a week	-54
a went	-16
a were	17
a what	24
a whatever	-39
a when	-22
a which	38
a white	28
a who	-33
a whole	-32
a wide	51
a will	56
a window	-47
a windows	32
a wiped	-33
a wire	-21
a wire's	45
a without	-17
a word	-44
a work	40
a works	-31
a would	-36
a wouldn't	-91
a wrongs	-47
a x	71
a yard	-67
a yesterday	21
a yet	-52
a you	-31
a you're	53
a zero	-17
a zip	-60
b a	-37
b above	37
b absent	-64
b ac	25
b actually	24
b add	95
b addendum	-15
b address	-25
b adds	30
b adhesive	41
b after	23
b against	30
b air	20
b aisle	-51
b alarm's	-21
b allow	75
b already	21
b alright	-48
b also	15
b amp	104
b amps	102
b an	-51
b anchors	36
b and	34
b another	-23
b anti	33
b any	24
b anything	37
b apart	62
b apartment	-57
b apiece	29
b appliance	20
b apt	-42
b aquastat	47
b architect	42
b are	39
b arm	-20
b around	-26
b arrived	42
b arsenal	-40
b as	24
b ask	-19
b asked	50
b at	24
b attic	-20
b b	-59
b back	-19
b badge	-18
b bags	21
b bakery	-20
b balusters	19
b bar	60
b base	35
b basement	-64
b basin	18
b bath	-17
b bath's	18
b bay	-40
b bays	-80
b bead	20
b beam	-31
b bearing	-27
b beat	-24
b because	32
b bed	-63
b bedroom	-61
b bedrooms	-27
b been	-29
b belts	27
b bench	51
b bent	37
b better	29
b between	-61
b big	-61
b billed	-42
b bin	-49
b birdied	-57
b black	35
b bldg	-39
b blew	26
b blinds	28
b blood	-91
b blower	49
b boards	27
b bolted	24
b bolts	61
b booked	-57
b boss	-52
b both	-58
b bought	59
b bout	20
b boxes	41
b boy	-19
b bracket	17
b brackets	41
b break	-52
b breaker	-38
b breaker's	68
b breakers	51
b brick	16
b bring	145
b bringing	37
b broke	67
b brought	73
b buckets	25
b building	-36
b built	-24
b bulb	28
b bumpers	38
b bunnings	-49
b burned	35
b busted	-39
b buy	82
b c	-30
b cable	29
b call	28
b calls	51
b cam	-71
b came	80
b camera	-47
b can	24
b cans	35
b cap	25
b card	31
b carpet	-36
b carton	33
b cartridge	-46
b casing	-38
b cat	-15
b catch	-20
b cats	-24
b caulk	-31
b cbd	21
b cell	-30
b center	42
b centres	22
b cfm	59
b ch	-61
b changed	56
b channel	-70
b chapter	-19
b charge	-49
b charged	-61
b chelsea	-21
b chimney	-31
b circuit	-75
b city	-20
b claim's	-17
b clamps	19
b class	-42
b cleaned	21
b clips	31
b close	25
b closer	38
b closes	-47
b closet	-16
b cloud	-17
b co	29
b code's	-70
b cold	48
b collar	49
b colour	-31
b column	-27
b comes	-18
b coming	-16
b confirmation	-33
b control	46
b copper	28
b corner	52
b counted	-15
b counter	-41
b counter's	23
b county	-47
b cover	41
b covers	16
b cracked	52
b crane's	-37
b crew	-17
b crowned	52
b cure	51
b cut	99
b cycles	56
b cylinder	30
b damper	26
b dash	-37
b day	-79
b days	-43
b dead	32
b deck	33
b deep	48
b degrees	43
b delivered	17
b den	69
b desk	-52
b detail	-33
b diagonals	70
b dialed	29
b didn't	-23
b dining	-28
b dip	-24
b display	-55
b do	-79
b dock	-28
b doing	-57
b don't	-31
b done	18
b door	-49
b doors	-19
b double	-33
b down	60
b downspouts	16
b downstairs	34
b dozen	-17
b drain	16
b draw	40
b drawer	-51
b drawing	52
b draws	23
b drew	-29
b drill	17
b drop	50
b drops	33
b drove	19
b dry	68
b dryer	-27
b drywall	-51
b drywall's	32
b duct	17
b duct's	22
b dwg	-33
b e	-22
b each	74
b east	-30
b edge	39
b egress	-37
b eight	34
b eighteen	44
b eighth	19
b eighths	59
b eighty	-43
b elbows	29
b electrician	-31
b elevation	-19
b elevator	-56
b end	29
b ends	-41
b engine	-20
b entry	-24
b episode	-24
b epoxy	-33
b error	-47
b exam	-34
b except	16
b exit	-49
b expires	-99
b exterior	-45
b f	-24
b failed	-15
b fall	-17
b fall's	17
b falls	-42
b fan	32
b fans	36
b far	46
b feeder	-24
b feeder's	-35
b feeds	-22
b feet	31
b fell	48
b field	-31
b fifteen	39
b fifty	50
b figure	28
b figured	-16
b fill	-44
b fire	16
b fit	-58
b fix	-49
b flange	33
b flashes	-92
b flat	-26
b flight	-59
b flip	-34
b flood	19
b floor	-17
b floor's	25
b flue	44
b footers	41
b footing	21
b footing's	48
b footy's	-21
b forms	46
b formula	-33
b forty	24
b found	48
b four	51
b fourth	-54
b frame	-48
b framed	31
b framing	-21
b friday	-28
b front	33
b full	23
b g	-32
b gallon	29
b gallons	26
b game	-30
b gang	-17
b gap	52
b gap's	24
b garage	64
b gasket	19
b gaskets	23
b gate	-40
b gate's	-20
b gauge	26
b gauged	29
b generator	80
b get	48
b gets	44
b getting	23
b gimme	53
b gives	-33
b glass	15
b glue	61
b glued	15
b goal	-44
b goes	25
b gonna	23
b got	19
b gotta	40
b gr	40
b grab	54
b gray	-24
b great	-20
b green	-47
b grid	27
b grout	41
b grout's	62
b guide	-19
b guys	-41
b had	41
b half	48
b hall	44
b hallway	25
b handed	-30
b handrail's	42
b hang	19
b hangers	47
b hard	29
b hardware	-38
b has	51
b hatch	-35
b have	59
b he	-110
b he'll	-30
b he's	-163
b head	58
b header	37
b header's	55
b headroom's	51
b heads	15
b hearth	21
b heat	39
b heater's	34
b heavy	-18
b held	48
b her	-41
b here	-59
b hes	-69
b high	64
b highway	-25
b him	-81
b hinge	36
b hinges	-48
b his	-91
b hit	-40
b hits	28
b hold	-59
b hole's	54
b holes	22
b holiday	-23
b home	-56
b homeruns	-31
b hood	36
b hooks	23
b hour	-60
b hours	-69
b how	27
b humidity	73
b humidity's	40
b hundred	27
b hung	68
b hvac	19
b hwy	-76
b i'd	42
b i've	23
b if	25
b im	-30
b in	-25
b inch	30
b inside	55
b inspector	-44
b install	-35
b into	17
b inv	-57
b invoice	-52
b island	47
b it	28
b it'll	30
b it's	-22
b item	-45
b items	-56
b its	20
b itself	-17
b jan	27
b job	-60
b joists	54
b jumper	-68
b just	95
b k	-36
b keep	59
b key	-60
b keyed	-53
b keynote	-29
b kick	39
b kicks	93
b kid	-52
b kid's	-24
b kids	67
b kind	44
b kit	17
b kitchen	62
b kits	37
b knee	-17
b knock	-30
b l	26
b l1	25
b l2	16
b label	26
b lady	-18
b lags	15
b laid	55
b landing	45
b lands	-28
b lane	-30
b lap	88
b last	34
b lb	40
b least	71
b leave	61
b leaves	70
b led	28
b left	53
b leg	87
b lengths	32
b less	29
b let	67
b level	-85
b light	-16
b light's	-17
b lights	47
b like	-19
b lime	33
b limit's	21
b line	-28
b little	-37
b live	25
b living	-33
b load	31
b lobby	20
b local	-33
b lock	21
b lockbox	-28
b longer	-30
b look	-28
b loop	-39
b loose	35
b lot	-104
b lounge	67
b low	31
b lumber	-15
b lunch	-38
b lvl	-30
b m	-56
b made	-49
b make	55
b man	-38
b marble	36
b mark	-49
b marked	-46
b marker	-18
b materials	-71
b max	40
b maximum	45
b maybe	15
b mc	31
b measure	-30
b measures	-18
b medallion	20
b medium	69
b meeting	-58
b meter	77
b metered	38
b metres	34
b mike	-26
b mil	18
b mile	-25
b millimeter	22
b million	-46
b mind	16
b mine	-31
b minus	19
b minute	37
b minutes	48
b mirror	27
b mirror's	37
b missing	47
b mix	44
b mm	37
b mode	-57
b moisture	94
b moisture's	47
b mold	25
b mon	-57
b moon	-43
b more	37
b move	44
b moved	-39
b mrs	-43
b ms	-48
b mud	-29
b must	33
b my	-86
b myself	-22
b nail	24
b nailed	34
b nails	59
b near	-29
b need	104
b needs	106
b net	-44
b never	34
b new	-34
b nfpa	-17
b nineteen	-32
b ninety	41
b no	63
b nobody	-16
b none	39
b north	45
b not	23
b note	-34
b nothing	40
b now	67
b number	-188
b number's	-67
b nursery	17
b nuts	20
b o	43
b oak	31
b odds	-36
b of	50
b office	-32
b offset	31
b oh	-33
b ohm	35
b ohms	50
b oil	-43
b okay	-74
b old	-63
b one's	-17
b only	76
b opened	18
b opening	39
b opening's	44
b opens	-47
b option	-16
b or	-25
b order	53
b ordered	74
b other	-17
b oughta	26
b our	-53
b outside	19
b oven	32
b over	35
b owes	-20
b owner	-25
b p	-48
b pack	-54
b packed	32
b packs	62
b pad	43
b page	-56
b paid	-38
b paint	-28
b painted	-57
b panel's	28
b paper	-49
b par	-41
b parked	-25
b part	-52
b passed	-29
b past	-16
b patch	37
b pavers	27
b pay	-34
b pcs	-40
b percent	17
b permit	-22
b pete	-27
b phase	-37
b photo	-17
b pick	61
b pickets	101
b picture	-20
b pieces	55
b pier	-51
b pin	-83
b pipe	48
b pitch	34
b place	-45
b plans	58
b plant	49
b plaster	61
b plastic	-29
b plates	28
b play	-27
b please	63
b plot	-44
b plug	18
b plumb	20
b plus	58
b po	-41
b point	42
b pole	-44
b poly	-28
b popped	-40
b port	-28
b pounds	23
b pour	-36
b poured	33
b press	-21
b pressure	18
b primer	28
b prob	-25
b psalm	-42
b psi	40
b pu	20
b pull	25
b pulled	-60
b pulling	51
b pulls	39
b pumped	58
b put	71
b qt	19
b qty	57
b quarter	-23
b quiet	-27
b quoted	-50
b r	-53
b rack	-66
b rafters	67
b rail	28
b rail's	18
b rain	23
b raise	54
b ran	33
b range	40
b rapid	-41
b rate's	-25
b rated	48
b ratio's	56
b ray	-21
b rcbo	22
b re	-36
b reach	-18
b read	60
b reading	57
b reads	92
b ready	-16
b real	28
b receptacles	19
b recoat	71
b red	-24
b ref	-21
b register's	38
b relief	49
b rental	-67
b rep	29
b replace	79
b replaced	17
b report	-58
b reset	18
b rest	16
b return	62
b return's	27
b reveal's	22
b rfi	-23
b rh	47
b right	-48
b rip	33
b ripped	19
b rise	59
b riser	-32
b rm	-70
b rock	37
b rod	28
b roll	-18
b rolled	-55
b rolls	-48
b roof	-22
b rooftop	-16
b room	-35
b rough	19
b roughed	31
b round	-34
b route	-19
b row	-59
b rtu	-77
b rubber	-20
b rule	23
b run	40
b running	19
b sags	39
b same	-42
b sand	-29
b sanded	24
b sandstone	18
b saturday	-22
b saves	-37
b saw	-31
b say	38
b saying	46
b scale	-72
b sch	-64
b sconces	16
b screed	15
b screwed	37
b screws	53
b seal	-39
b sealed	-48
b season	-15
b seat	30
b sec	-45
b section	-46
b see	-21
b send	-53
b sent	58
b serial's	-22
b served	-32
b set	125
b sets	-41
b setting	-22
b seventeen	16
b seventy	71
b she	-60
b she'll	-68
b she's	-87
b shear	17
b sheathing	17
b sheet	-41
b shelf	30
b shelves	48
b shelving	-54
b shift	-21
b shim	24
b shld	16
b shoe	20
b short	135
b shorted	82
b should	83
b should've	74
b shoved	-19
b shows	50
b side	45
b side's	39
b sill	62
b sill's	41
b since	-82
b sister	69
b sit	52
b site	-55
b sitting	-17
b six	44
b sixteen	38
b sixty	50
b size	17
b slab	54
b slab's	60
b slake	57
b slate	-22
b slept	-50
b slope	-17
b slump	87
b smoko	-27
b snag	-19
b snapped	-16
b snow	27
b so	41
b soak	36
b sockets	21
b sold	44
b solid	-17
b some	17
b somebody	70
b something	-27
b sometime	-63
b somewhere	89
b song	-16
b sorry	39
b south	19
b space	20
b spaced	35
b spacing	61
b span's	20
b spare	37
b spec	92
b spent	27
b spot	-31
b spring's	-31
b spurs	-43
b sq	17
b square	22
b squares	24
b squeak	29
b stack	20
b stage	-42
b stainless	31
b stair	-35
b stairs	-16
b standing	31
b start	-58
b starts	-18
b stat	30
b state	-27
b static	47
b static's	38
b station	-19
b stay	38
b stays	28
b step's	63
b still	20
b stitch	-37
b stock	33
b stone	49
b stops	22
b strips	35
b stub	47
b stuck	26
b stud	18
b studio	-30
b studs	67
b stuff	54
b style	16
b sub	-27
b subcool	35
b subcool's	22
b subfloor	59
b subfloor's	23
b suite	-35
b summer	-40
b superheat	49
b superheat's	47
b supply	47
b swap	58
b swapped	27
b sweet	-31
b swing	-24
b table	-93
b tag	-56
b take	-25
b tank	-23
b tap	47
b tape	38
b tel	-21
b temp	91
b ten	-30
b tenant	-44
b terms	-70
b test	38
b tested	66
b th	-44
b than	48
b that	-22
b that's	-33
b their	-24
b them	26
b then	-38
b there	-29
b thermostat	43
b thermostat's	52
b they	-20
b they're	-69
b they've	-33
b thick	49
b thin	69
b think	-22
b thinks	-39
b thinset	56
b thirteen	69
b thirty	43
b this	-65
b those	24
b though	33
b three	25
b threw	21
b throw	49
b throwing	-28
b thurs	-26
b ticket	-29
b tied	18
b ties	54
b tight	20
b til	-40
b tile	46
b tiles	42
b till	-18
b time	-49
b times	-42
b to	46
b toast	33
b toilet	56
b told	16
b tomorrow	-42
b too	20
b torque	49
b torqued	26
b total	55
b touch	21
b town	15
b tracking	-41
b traffic	-30
b trailer	-60
b trap	36
b tray	16
b tread	-42
b treads	44
b trim	56
b trimmed	44
b tripped	-40
b truck	31
b truck's	-86
b tube	23
b tubes	26
b turned	-59
b twelve	51
b twenty	56
b two	32
b txt	-35
b type	-76
b u	-72
b unit	-96
b united	-23
b units	-31
b uppers	22
b upstairs	49
b use	18
b used	109
b utility	-19
b v	-23
b valve	79
b van	60
b vanity	74
b vent	53
b version	-20
b vikings	-78
b volt	-15
b volts	59
b wait	41
b waited	-86
b waiting	26
b walk	-31
b wall	71
b wall's	50
b wallpaper	-31
b walls	-18
b walnut	-46
b want	47
b wanted	53
b wants	75
b wardrobe	-60
b was	16
b washer	18
b waste	24
b water's	56
b way	-56
b we	31
b we've	28
b wednesday	-32
b week	-67
b went	24
b wet	75
b when	16
b white	36
b whole	-19
b wide	53
b width	46
b will	16
b window	-65
b windows	17
b wire	25
b wire's	57
b with	23
b wo	-21
b won't	43
b wood	-23
b wood's	45
b work	-32
b worked	-41
b working	-20
b works	-30
b would	18
b wrong	-16
b x	47
b yard	-50
b yeah	-21
b year	-28
b you	-19
b your	-39
b zero	-63
b zone	-94
bare 1	-56
bare 2	56
bare 3	20
claims 1	17
claims 2	-35
form 0figures 2	-20
form 0figures 4	-60
form figures 2	38
form figures 4	-48
form figures 5	-56
form oh	-43
form parts	68
form swallowed	-21
form swallowed round	-25
head 0	20
head 1	78
head 2	29
head 3	45
head none	-31
l of cars	-51
l of clock	-64
l of kin	-29
l of money	-59
l of papers	-41
l of past	30
l of phones	-76
l of roads	-124
l of school	-45
l of services	-32
l of sport	-25
l1 	34
l1 
	-129
l1 #	-29
l1 \$	-117
l1 (	25
l1 )	-15
l1 +	65
l1 ,	49
l1 -	-58
l1 .	26
l1 /	20
l1 3	-19
l1 555	-17
l1 :	76
l1 <	17
l1 above	16
l1 add	84
l1 addendum	-15
l1 adds	30
l1 aisle	-51
l1 all	85
l1 allow	46
l1 an	-76
l1 and	94
l1 another	-35
l1 apartment	-33
l1 apt	-42
l1 are	27
l1 around	-24
l1 at	32
l1 bath	-87
l1 bay	-111
l1 be	60
l1 bed	-62
l1 bedroom	-97
l1 before	-29
l1 better	16
l1 between	-22
l1 big	-36
l1 bldg	-47
l1 bottom	-57
l1 bought	95
l1 bout	42
l1 box	-22
l1 bracket	36
l1 breaker	-63
l1 bring	108
l1 broke	-17
l1 building	-39
l1 but	29
l1 buy	120
l1 by	55
l1 case	16
l1 cat	-24
l1 ceiling	-20
l1 ch	-61
l1 change	33
l1 channel	-42
l1 chapter	-19
l1 circuit	-86
l1 class	-20
l1 closet	47
l1 cloud	-17
l1 coat	-39
l1 code	-75
l1 code's	-60
l1 counted	38
l1 counter	-29
l1 cracked	23
l1 cure	27
l1 cut	70
l1 d	-19
l1 dash	-28
l1 day	-112
l1 detail	-26
l1 dock	-28
l1 doing	-29
l1 done	32
l1 door	-45
l1 double	-34
l1 drawer	-38
l1 drove	21
l1 dry	44
l1 e	-24
l1 each	-47
l1 edge	36
l1 eight	-15
l1 elevator	-20
l1 eleven	-17
l1 em	15
l1 error	-47
l1 every	-40
l1 exit	-54
l1 extension	-16
l1 exterior	-22
l1 f	-29
l1 fall's	17
l1 fan	46
l1 first	-27
l1 five	-44
l1 flat	-51
l1 floor	-53
l1 for	30
l1 formula	-33
l1 found	71
l1 four	-38
l1 fourteen	-34
l1 framed	37
l1 fresh	-23
l1 front	28
l1 full	48
l1 gap	22
l1 garage	68
l1 get	135
l1 gets	59
l1 getting	23
l1 gimme	53
l1 go	51
l1 going	44
l1 good	-38
l1 got	94
l1 grab	76
l1 grade	-30
l1 had	40
l1 hall	66
l1 has	100
l1 have	78
l1 he's	-85
l1 header's	23
l1 her	-32
l1 here	-16
l1 highway	-17
l1 hole	-53
l1 hole's	52
l1 humidity's	33
l1 hung	52
l1 in	-58
l1 inch	65
l1 inside	38
l1 install	-27
l1 invoice	-44
l1 is	63
l1 it	86
l1 item	-44
l1 job	-38
l1 just	84
l1 key	-71
l1 keynote	-29
l1 kitchen	40
l1 laid	51
l1 lane	-30
l1 least	71
l1 leaves	62
l1 left	34
l1 level	-57
l1 limit's	21
l1 line	-54
l1 local	-33
l1 longer	-30
l1 loop	-48
l1 lot	-98
l1 lvl	-34
l1 m	-44
l1 mark	-53
l1 marker	-18
l1 maybe	67
l1 me	29
l1 measure	-42
l1 measured	24
l1 measures	26
l1 minus	20
l1 mix	52
l1 mode	-57
l1 moisture	36
l1 nd	-40
l1 need	129
l1 needs	87
l1 net	-47
l1 new	-86
l1 nine	-23
l1 nineteen	-23
l1 not	52
l1 note	-34
l1 now	58
l1 number	-192
l1 number's	-61
l1 of	-40
l1 ofc	-15
l1 off	-25
l1 oh	-33
l1 old	-88
l1 on	-21
l1 one	-65
l1 ones	35
l1 only	77
l1 open	-28
l1 opened	-27
l1 opening's	22
l1 or	-42
l1 order	26
l1 ordered	46
l1 ought	-37
l1 out	84
l1 over	20
l1 p	-52
l1 page	-43
l1 paid	-26
l1 panel	-24
l1 panel's	28
l1 par	-22
l1 phase	-19
l1 pin	-23
l1 plant	49
l1 plate	45
l1 plot	-44
l1 plus	71
l1 po	-20
l1 port	-29
l1 poured	29
l1 press	-19
l1 pressure's	-33
l1 primed	-20
l1 psalm	-42
l1 pull	49
l1 pulling	50
l1 put	46
l1 quarter	53
l1 quoted	-42
l1 r	-67
l1 rack	-28
l1 rail's	18
l1 ran	67
l1 rate's	-25
l1 rated	43
l1 read	63
l1 reading	47
l1 reads	63
l1 red	43
l1 replaced	50
l1 return	17
l1 returned	23
l1 rev	-28
l1 rfi	-23
l1 rh	35
l1 right	-42
l1 rise	35
l1 riser	-26
l1 rm	-95
l1 road	-25
l1 room	-66
l1 row	-30
l1 rtu	-19
l1 run	53
l1 running	28
l1 said	25
l1 saves	-37
l1 say	51
l1 saying	48
l1 says	36
l1 season	-15
l1 second	-39
l1 section	-45
l1 see	55
l1 sent	36
l1 set	78
l1 she's	-39
l1 sheet	-49
l1 shelf	-32
l1 short	104
l1 shower	-23
l1 shows	29
l1 side	32
l1 side's	37
l1 since	-40
l1 six	19
l1 so	105
l1 solid	-25
l1 spacing	30
l1 span's	20
l1 spec	23
l1 spurs	-43
l1 square	-45
l1 stage	-42
l1 stair	-46
l1 static's	18
l1 station	-19
l1 step	-51
l1 still	66
l1 strike	-42
l1 suite	-33
l1 superheat	34
l1 sweet	-31
l1 switch	-55
l1 t	18
l1 table	-35
l1 take	32
l1 takes	-32
l1 tank	-22
l1 temp	32
l1 ten	-34
l1 than	43
l1 that	-87
l1 the	-95
l1 then	-44
l1 there	-26
l1 theres	22
l1 they're	-24
l1 thing	-34
l1 thinset	58
l1 this	-36
l1 through	18
l1 ticket	-16
l1 til	-33
l1 till	-37
l1 times	19
l1 to	74
l1 tomorrow	23
l1 took	60
l1 traffic	-30
l1 tread	-41
l1 treads	39
l1 truck	-49
l1 turned	-37
l1 twelve	-38
l1 twenty	-16
l1 two	46
l1 type	-69
l1 under	74
l1 unit	-138
l1 up	43
l1 us	28
l1 use	36
l1 used	108
l1 vanity	33
l1 version	-20
l1 wait	18
l1 wall	66
l1 wall's	33
l1 want	62
l1 wanted	39
l1 wants	93
l1 was	64
l1 we're	66
l1 well	40
l1 went	-52
l1 what	-38
l1 wide	17
l1 wire's	24
l1 wo	-21
l1 x	81
l1 you	-19
l1 your	-41
l1 zone	-90
l1 £	-57
l1. #	28
l1. \$	-117
l1. 's	96
l1. (	25
l1. )	-15
l1. +	65
l1. ,	49
l1. -	-58
l1. -ed	55
l1. -ing	37
l1. -ly	62
l1. -s	65
l1. .	26
l1. /	-109
l1. 1	-62
l1. :	76
l1. <	17
l1. Name	-113
l1. letter	-38
l1. one	-105
l1. unit	-46
l1. £	-57
l2 	-16
l2 
	32
l2 %	-27
l2 '	62
l2 (	52
l2 )	-28
l2 ,	28
l2 1	-68
l2 10	37
l2 118	-27
l2 14	19
l2 3	-38
l2 31	-58
l2 34	26
l2 4	21
l2 400	-18
l2 5	-19
l2 555	-30
l2 6	-43
l2 60	20
l2 600	36
l2 68	33
l2 8	-21
l2 9	19
l2 a	-144
l2 address	-22
l2 allow	44
l2 alright	-17
l2 amps	25
l2 an	-48
l2 anything	31
l2 asked	30
l2 at	-124
l2 b	-20
l2 back	-39
l2 bags	19
l2 bar	23
l2 base	29
l2 basement	36
l2 be	48
l2 bedroom	34
l2 bench	47
l2 billed	-42
l2 block	41
l2 boards	-20
l2 book	28
l2 booked	-18
l2 bottom	34
l2 box	38
l2 boxes	58
l2 boy	-19
l2 breaker's	39
l2 bring	16
l2 broke	76
l2 built	-19
l2 burned	46
l2 but	-27
l2 by	-70
l2 call	87
l2 calls	42
l2 came	24
l2 cap	36
l2 change	-74
l2 changed	27
l2 charge	-22
l2 charged	-61
l2 chimney	-32
l2 clamps	28
l2 class	-20
l2 clips	-16
l2 close	16
l2 closer	43
l2 closes	-33
l2 closet	-18
l2 code	70
l2 column	-29
l2 comes	21
l2 coming	-36
l2 corner	25
l2 cost	-16
l2 could	18
l2 county	-21
l2 cure	31
l2 cut	71
l2 deep	24
l2 dip	-24
l2 dog	-27
l2 don't	-84
l2 done	32
l2 double	-30
l2 down	28
l2 drawing	19
l2 dropped	22
l2 dry	17
l2 dryer	-31
l2 eight	22
l2 elbows	17
l2 em	45
l2 end	16
l2 epoxy	-47
l2 except	-17
l2 fan	-27
l2 fault	-25
l2 feet	-25
l2 fifty	-25
l2 first	40
l2 fitted	23
l2 floor's	18
l2 flue	45
l2 flush	23
l2 foot	44
l2 footers	20
l2 for	-70
l2 forms	46
l2 forty	-53
l2 four	70
l2 fourteen	-16
l2 fourth	-50
l2 friday	-48
l2 from	-67
l2 ft	36
l2 full	-50
l2 g	-32
l2 gang	-16
l2 gate	-21
l2 gauge	15
l2 gave	38
l2 get	-22
l2 give	-19
l2 glass	41
l2 go	-24
l2 gonna	21
l2 good	15
l2 got	-23
l2 gotta	50
l2 grab	-27
l2 grout	21
l2 guy	49
l2 had	-29
l2 half	-25
l2 hammer	15
l2 hand	19
l2 handrail	16
l2 hardware	-57
l2 have	40
l2 he	-58
l2 he's	-38
l2 head	63
l2 header	36
l2 header's	24
l2 heads	-23
l2 heat	42
l2 heater	33
l2 held	35
l2 her	-49
l2 here	-43
l2 hes	-21
l2 high	58
l2 hinges	-34
l2 his	-32
l2 hold	-63
l2 hole	19
l2 hours	-49
l2 house	-36
l2 humidity	51
l2 hundred	24
l2 hung	17
l2 i	83
l2 i'd	51
l2 i'll	15
l2 i'm	24
l2 in	-51
l2 inches	41
l2 inside	28
l2 instead	56
l2 it	16
l2 it'll	49
l2 joists	35
l2 k	-15
l2 kid	-55
l2 kit	31
l2 kitchen	-36
l2 left	52
l2 leg	69
l2 lengths	41
l2 level	-35
l2 like	-17
l2 line	-15
l2 lock	28
l2 long	25
l2 loose	52
l2 low	60
l2 lunch	-37
l2 main	17
l2 make	89
l2 max	16
l2 maybe	-42
l2 me	-28
l2 meter	52
l2 mil	-59
l2 mile	-23
l2 million	-41
l2 minutes	57
l2 missing	63
l2 mm	51
l2 monday	31
l2 more	39
l2 morning	32
l2 mud	-20
l2 my	-24
l2 nails	17
l2 nineteen	-35
l2 no	-113
l2 north	23
l2 not	-35
l2 number	-27
l2 of	-66
l2 of body	-21
l2 of cars	-56
l2 of clock	-44
l2 of food	-42
l2 of kin	-61
l2 of money	-70
l2 of past	-17
l2 of roads	40
l2 of school	-66
l2 of services	-30
l2 off	-36
l2 office	-23
l2 offset	31
l2 oh	-26
l2 ohms	21
l2 ok	-28
l2 okay	-22
l2 old	-19
l2 on	-36
l2 one	-21
l2 only	72
l2 opening	23
l2 or	16
l2 out	-49
l2 outlets	21
l2 owes	-20
l2 pack	-16
l2 paint	-17
l2 passed	-24
l2 pay	-24
l2 per	-24
l2 pick	85
l2 picked	40
l2 pickets	94
l2 pipe	42
l2 plan	24
l2 plaster	26
l2 plate	-30
l2 play	-21
l2 please	18
l2 posts	18
l2 pressure's	42
l2 primer	15
l2 pumped	21
l2 put	67
l2 quarter	-44
l2 r	-63
l2 rail	38
l2 raise	50
l2 ran	-43
l2 real	38
l2 recoat	71
l2 red	-63
l2 right	23
l2 room	-27
l2 rough	24
l2 round	-46
l2 rtu	-47
l2 run	-17
l2 runs	-15
l2 sand	-27
l2 says	21
l2 scale	-23
l2 screws	62
l2 see	-36
l2 set	73
l2 sets	-46
l2 seven	-21
l2 seventy	40
l2 she	-39
l2 she'll	-50
l2 she's	-21
l2 sheets	-28
l2 shelf	33
l2 shim	30
l2 short	63
l2 shorted	79
l2 shot	24
l2 should	56
l2 side	-29
l2 sill	52
l2 sixteen	19
l2 smoko	-17
l2 so	32
l2 soak	36
l2 sockets	21
l2 sometime	-31
l2 somewhere	72
l2 space	20
l2 spec	75
l2 stairs	-35
l2 start	17
l2 stay	32
l2 step	17
l2 sticks	29
l2 still	-17
l2 studs	47
l2 sub	-27
l2 subfloor	27
l2 subfloor's	19
l2 swap	27
l2 switch	25
l2 table	-50
l2 take	-30
l2 tape	25
l2 temp	20
l2 ten	-41
l2 tested	66
l2 that	77
l2 that's	-26
l2 the	-86
l2 them	29
l2 there	-23
l2 there's	37
l2 thermostat	15
l2 thermostat's	44
l2 they're	-16
l2 thin	33
l2 third	-18
l2 thirty	-19
l2 this	-20
l2 three	50
l2 through	-18
l2 thursday	-30
l2 to	-32
l2 toast	26
l2 toilet	17
l2 tomorrow	-61
l2 torqued	26
l2 trap	45
l2 twenty	28
l2 two	-42
l2 type	-46
l2 u	-37
l2 under	-21
l2 unit	-21
l2 used	-16
l2 vanity	54
l2 wall	42
l2 walls	-38
l2 wants	-18
l2 was	-104
l2 washer	32
l2 water	32
l2 we	45
l2 we've	26
l2 went	67
l2 were	35
l2 which	34
l2 width	47
l2 will	32
l2 window	-45
l2 windows	18
l2 wood	18
l2 zero	-56
l2. #	-16
l2. %	-27
l2. '	62
l2. 's	17
l2. (	52
l2. )	-28
l2. ,	28
l2. -ed	36
l2. -ing	-21
l2. -ly	-34
l2. -s	65
l2. /	34
l2. Name	-58
l2. letter	32
l2. n't	-67
l2. one	-45
l2. unit	16
l3 (	23
l3 ,	35
l3 -	-19
l3 /	23
l3 1	-46
l3 1.5	40
l3 10	-63
l3 12	31
l3 15	20
l3 16	-32
l3 2	31
l3 22	-17
l3 24	33
l3 3	22
l3 450	-17
l3 5	-50
l3 6	20
l3 7	-45
l3 8	24
l3 9	-42
l3 ;	23
l3 a	37
l3 after	35
l3 all	-16
l3 also	-16
l3 am	-27
l3 amp	19
l3 amps	58
l3 an	53
l3 apart	42
l3 apiece	29
l3 are	-27
l3 at	-75
l3 b	-32
l3 bags	-19
l3 base	23
l3 basement	-32
l3 bath	71
l3 bay	82
l3 be	-35
l3 before	23
l3 between	-71
l3 boards	20
l3 book	-25
l3 boss	-20
l3 both	-32
l3 bought	-18
l3 busted	-36
l3 but	-48
l3 buy	-17
l3 by	20
l3 c	-16
l3 call	-45
l3 came	79
l3 capped	25
l3 cause	-22
l3 change	43
l3 changed	33
l3 channel	-47
l3 circuit	37
l3 claim's	-15
l3 cleaned	39
l3 clear	32
l3 clips	26
l3 code	-30
l3 come	-17
l3 comes	-20
l3 crack	16
l3 cracked	37
l3 crane's	-30
l3 cut	45
l3 dryer	30
l3 each	85
l3 eight	34
l3 eighty	-51
l3 ends	-21
l3 every	16
l3 except	-19
l3 extension	23
l3 failed	-15
l3 fence	22
l3 flat	-32
l3 footers	23
l3 footy's	-21
l3 for	16
l3 four	-21
l3 fridge	18
l3 ft	21
l3 gap	32
l3 get	-71
l3 give	37
l3 goal	-38
l3 goes	46
l3 going	-45
l3 gone	26
l3 gotta	60
l3 grab	40
l3 gray	-24
l3 guy	-24
l3 hardware	-18
l3 have	-17
l3 he	-40
l3 he's	-34
l3 heads	44
l3 her	-21
l3 here	15
l3 hes	-48
l3 him	-48
l3 hinge	25
l3 his	-27
l3 hit	-20
l3 hole	15
l3 hood	21
l3 hour	-30
l3 hours	-27
l3 house	18
l3 hundred	-33
l3 hung	34
l3 i'd	39
l3 i'm	29
l3 i've	29
l3 if	71
l3 in	-30
l3 inch	34
l3 inside	-20
l3 is	-47
l3 island	19
l3 it's	-23
l3 its	-38
l3 jumper	-55
l3 keep	29
l3 key	-24
l3 kicks	51
l3 knock	-30
l3 lady	-19
l3 laid	19
l3 last	-32
l3 leg	51
l3 let	35
l3 made	-49
l3 me	16
l3 meter	23
l3 mirror's	31
l3 mm	-20
l3 more	40
l3 morning	-16
l3 move	43
l3 ms	-49
l3 must	47
l3 my	-53
l3 nailed	23
l3 need	-25
l3 needs	18
l3 new	30
l3 next	-19
l3 nine	30
l3 no	39
l3 nobody	-51
l3 nosing	-18
l3 nothing	31
l3 now	-26
l3 oh	27
l3 ok	-27
l3 okay	-16
l3 old	67
l3 one's	-24
l3 ones	-21
l3 only	-36
l3 open	33
l3 order	-15
l3 ordered	24
l3 ought	38
l3 out	-53
l3 owner	-25
l3 panel	15
l3 paper	-24
l3 pick	30
l3 pipe	-19
l3 ply	-23
l3 psi	25
l3 put	-68
l3 r	29
l3 rack	-38
l3 range	-17
l3 red	-18
l3 rental	-29
l3 rip	33
l3 room	38
l3 row	-32
l3 run	58
l3 s	31
l3 screw	16
l3 screws	16
l3 second	58
l3 see	-58
l3 seven	-19
l3 seventy	23
l3 she	-25
l3 shelves	34
l3 short	-17
l3 side	36
l3 since	-20
l3 slab	17
l3 somebody	53
l3 spacing	25
l3 stairs	29
l3 start	-43
l3 still	-41
l3 strip	37
l3 stuck	-28
l3 supply	16
l3 switch	-24
l3 tap	26
l3 tape	-28
l3 temp	44
l3 ten	-31
l3 test	21
l3 th	-22
l3 that's	-16
l3 the	38
l3 their	-16
l3 them	23
l3 there	50
l3 they	-35
l3 they're	-27
l3 thick	64
l3 thinks	-39
l3 thirteen	49
l3 thirty	19
l3 three	-34
l3 thurs	-24
l3 thursday	23
l3 tile	40
l3 till	24
l3 times	-41
l3 tomorrow	34
l3 too	43
l3 torque	49
l3 touch	17
l3 truck	39
l3 twelve	30
l3 twice	29
l3 two	-24
l3 u	-33
l3 under	18
l3 unit	38
l3 up	-15
l3 upstairs	29
l3 us	-32
l3 van	27
l3 vent	31
l3 walk	-19
l3 water	-24
l3 way	-25
l3 week	-40
l3 well	27
l3 went	19
l3 were	21
l3 white	54
l3 wide	23
l3 won't	37
l3 wood	-35
l3 work	-17
l3 x	47
l3 yard	-29
l3 yet	17
l3 you	-54
l3. (	23
l3. ,	35
l3. -	-19
l3. -ed	-27
l3. -ing	28
l3. ;	23
l3. letter	28
l3. n't	44
l3. unit	19
letter head 0	-45
letter head none	-24
long 10	-56
long 16	23
long 30	69
more figures 5	-37
more l. word	-46
more r 	-36
more r. #	-36
more words round	-24
of cars	23
of food	-27
of kin	-61
of media	-62
of money	-71
of papers	-23
of past	-23
of phones	-58
of roads	-22
of services	31
of so many 0	47
of so many 1	-40
of so many 3	-31
one head none	-114
r of body	-29
r of cars	16
r of clock	-55
r of food	-48
r of kin	-127
r of money	-181
r of phones	-30
r of school	-21
r of services	71
r of sport	-58
r1 )	-85
r1 ,	21
r1 -	-93
r1 .	16
r1 10	19
r1 12	37
r1 2	69
r1 3	-25
r1 30	-18
r1 4	28
r1 5	23
r1 555	-24
r1 :	-137
r1 ;	37
r1 @	18
r1 a	-63
r1 aa	26
r1 about	-17
r1 above	23
r1 across	28
r1 adds	-53
r1 aff	19
r1 again	-38
r1 agree	-39
r1 alder	-17
r1 along	26
r1 already	-48
r1 amigos	-40
r1 an	-55
r1 anchor	15
r1 anchors	44
r1 angry	-37
r1 apart	69
r1 are	19
r1 area	-35
r1 at	52
r1 b	-57
r1 baby	19
r1 back	65
r1 banksia	-27
r1 base	17
r1 bath	20
r1 baths	36
r1 batts	-37
r1 bays	-22
r1 bedroom	-21
r1 before	62
r1 below	24
r1 belt	-23
r1 between	42
r1 blade	-17
r1 blades	38
r1 blank	22
r1 blinds	27
r1 block	20
r1 blocks	45
r1 board	42
r1 boards	61
r1 bolts	26
r1 bracket	44
r1 brackets	44
r1 brass	41
r1 brick	34
r1 broken	48
r1 bucks	-122
r1 bulbs	25
r1 business	-34
r1 by	58
r1 c	-34
r1 cabinet	31
r1 call	20
r1 came	16
r1 can	-36
r1 card	-16
r1 centers	37
r1 centres	33
r1 cents	-40
r1 chance	-44
r1 chipped	24
r1 clamps	18
r1 clear	54
r1 clips	43
r1 closed	61
r1 closets	39
r1 code	-17
r1 come	-37
r1 coming	64
r1 corner	53
r1 couplings	24
r1 cracked	59
r1 crew	-57
r1 cut	27
r1 dash	-17
r1 dead	33
r1 deep	89
r1 digits	-23
r1 does	-17
r1 doing	-56
r1 dollar	-66
r1 dollars	-59
r1 don't	66
r1 done	49
r1 doors	54
r1 double	41
r1 down	19
r1 downstairs	19
r1 drip	54
r1 drops	45
r1 elbows	34
r1 elsewhere	29
r1 euro	-98
r1 even	23
r1 every	-20
r1 extra	70
r1 fall	37
r1 filter	19
r1 fingers	-29
r1 five	-61
r1 flat	29
r1 floor	27
r1 footings	25
r1 forty	-27
r1 four	-62
r1 fourteen	-17
r1 fourth	-17
r1 from	-18
r1 full	25
r1 gang	-76
r1 gasket	22
r1 get	-42
r1 gets	-53
r1 go	-70
r1 goes	-43
r1 good	34
r1 got	-22
r1 grille	-39
r1 guys	-85
r1 had	-28
r1 half	18
r1 hall	58
r1 hand	-42
r1 handle	-72
r1 hangers	46
r1 has	-80
r1 hasn't	-17
r1 have	40
r1 he'll	-38
r1 head	32
r1 heads	56
r1 heavy	23
r1 here	55
r1 high	73
r1 hinge	24
r1 hinges	65
r1 hit	-45
r1 hole	-96
r1 homeruns	-24
r1 hooks	48
r1 hot	24
r1 hundreds	-36
r1 hung	25
r1 i	33
r1 i'll	17
r1 i've	-21
r1 if	-29
r1 in	27
r1 inch	16
r1 inside	15
r1 instead	39
r1 is	-126
r1 ish	-39
r1 it	-27
r1 it'll	-33
r1 joist	18
r1 just	56
r1 keys	-21
r1 kinds	-56
r1 knobs	24
r1 larch	-33
r1 last	-53
r1 late	-52
r1 layer	-76
r1 layers	40
r1 lead	26
r1 left	82
r1 leg	-20
r1 lights	46
r1 like	-22
r1 lives	-31
r1 long	46
r1 loose	37
r1 man	-34
r1 maple	-39
r1 max	43
r1 miles	-34
r1 missing	37
r1 moisture	24
r1 more	114
r1 moves	-15
r1 nail	35
r1 need	67
r1 needs	-56
r1 new	64
r1 next	-36
r1 nil	-30
r1 ninety	-35
r1 ninth	-24
r1 no	21
r1 nos	35
r1 not	36
r1 nothing	-55
r1 notice	-82
r1 number	22
r1 o'clock	-98
r1 oc	63
r1 oclock	-46
r1 off	77
r1 old	-59
r1 one	22
r1 openings	24
r1 outlets	75
r1 outside	19
r1 outta	42
r1 panel	-125
r1 panels	26
r1 part	-58
r1 pascals	22
r1 pavers	48
r1 per	77
r1 pickets	22
r1 piers	25
r1 pipe	20
r1 plate	17
r1 please	16
r1 pm	-54
r1 pole	-21
r1 posts	20
r1 potato	-47
r1 pulls	52
r1 put	-33
r1 quarter	-36
r1 quid	-43
r1 r	-18
r1 rail	50
r1 reads	-37
r1 receps	27
r1 receptacles	38
r1 reducer	31
r1 risers	20
r1 rolled	-20
r1 rooms	21
r1 rough	17
r1 rubber	27
r1 running	34
r1 runs	65
r1 sash	-29
r1 says	-76
r1 sconces	40
r1 score	-23
r1 screens	52
r1 screw	23
r1 screws	76
r1 sec	-23
r1 second	-69
r1 series	-18
r1 shakes	-36
r1 sharp	-48
r1 she	-21
r1 shelves	17
r1 shift	-55
r1 shims	22
r1 short	34
r1 shot	-23
r1 should	42
r1 shows	-32
r1 side	-23
r1 sides	-27
r1 silicone	-22
r1 since	-27
r1 slake	36
r1 slope	25
r1 smoke	41
r1 so	50
r1 south	23
r1 spaces	31
r1 spare	38
r1 square	29
r1 star	-22
r1 stars	-56
r1 still	60
r1 stops	-41
r1 straps	39
r1 stripped	22
r1 stroke	-15
r1 studs	62
r1 supply	18
r1 sure	-38
r1 switch	43
r1 switches	28
r1 tall	22
r1 ten	43
r1 the	-46
r1 then	24
r1 there	-28
r1 thick	60
r1 thing	-25
r1 things	-77
r1 thirty	15
r1 this	-24
r1 through	-15
r1 tile	55
r1 tiles	44
r1 till	-20
r1 time	-20
r1 times	-146
r1 to	34
r1 toilet	49
r1 toilets	42
r1 tomorrow	-69
r1 tonight	34
r1 top	25
r1 total	38
r1 towel	26
r1 treads	93
r1 trees	28
r1 trim	24
r1 tripped	-37
r1 two	-47
r1 u	-23
r1 under	27
r1 up	18
r1 used	28
r1 valve	-15
r1 vanities	17
r1 walls	37
r1 wants	-35
r1 was	-75
r1 washers	22
r1 waste	27
r1 wax	22
r1 way	-83
r1 ways	-64
r1 we	-15
r1 wednesday	38
r1 week	-29
r1 weekend	-44
r1 were	30
r1 when	20
r1 which	20
r1 while	22
r1 white	31
r1 wide	82
r1 will	30
r1 window	-58
r1 windows	59
r1 with	-18
r1 won't	25
r1 work	34
r1 wrongs	-47
r1 x	62
r1 you	32
r1. 's	50
r1. )	-85
r1. ,	21
r1. -	-93
r1. -ing	17
r1. -s	20
r1. .	16
r1. 1	19
r1. :	-137
r1. ;	37
r1. @	18
r1. Name	-47
r1. letter	36
r1. n't	20
r1. one	-106
r1. unit	-21
r1. word	20
r2 
	19
r2 "	36
r2 (	-40
r2 *	-24
r2 +	20
r2 .	30
r2 /	-22
r2 00	-20
r2 0142	-29
r2 100	44
r2 12	87
r2 15	29
r2 16	24
r2 2	-35
r2 20	-27
r2 22	19
r2 28	33
r2 30	-28
r2 34	-26
r2 36	16
r2 40	20
r2 5	-31
r2 6	22
r2 7	-47
r2 8	46
r2 :	-80
r2 a	-36
r2 about	-42
r2 already	-23
r2 also	-52
r2 amp	22
r2 and	26
r2 are	66
r2 ask	43
r2 at	-25
r2 ave	-16
r2 b	-23
r2 back	-36
r2 bags	19
r2 bath	-39
r2 be	63
r2 bedroom	-41
r2 before	-40
r2 behind	19
r2 bent	37
r2 blind	-19
r2 boards	28
r2 bolts	22
r2 bought	37
r2 box	-55
r2 boxes	52
r2 bring	27
r2 but	25
r2 buy	19
r2 by	-20
r2 c	-21
r2 call	-42
r2 cap	45
r2 caulk	56
r2 ceiling	-26
r2 center	71
r2 change	-56
r2 changed	15
r2 client	-42
r2 clips	21
r2 close	31
r2 coats	44
r2 code	74
r2 come	-15
r2 coming	-31
r2 concrete	-29
r2 crack	-22
r2 cracked	100
r2 crown	-27
r2 cut	19
r2 day	-30
r2 days	-42
r2 deal	-30
r2 do	54
r2 don't	-38
r2 done	-41
r2 down	-102
r2 each	66
r2 eight	-19
r2 eighty	-46
r2 elbow	-25
r2 em	111
r2 epoxy	-31
r2 every	30
r2 extra	-21
r2 far	58
r2 fifty	-24
r2 filters	28
r2 fine	52
r2 five	-65
r2 floor	-22
r2 foot	20
r2 footers	36
r2 for	31
r2 four	-23
r2 fourteen	44
r2 friday	34
r2 fridays	-36
r2 from	-18
r2 front	58
r2 full	18
r2 furnace	-46
r2 gang	-26
r2 glue	-35
r2 go	52
r2 going	-19
r2 good	21
r2 got	41
r2 grade	42
r2 ground	-24
r2 grout	42
r2 half	25
r2 hang	60
r2 hangers	22
r2 he	-59
r2 he's	-21
r2 heads	22
r2 him	15
r2 hinges	-43
r2 hole	-19
r2 hour	-56
r2 hung	35
r2 i've	73
r2 if	-28
r2 inch	47
r2 inside	29
r2 joist	20
r2 just	-16
r2 latch	22
r2 laundry	-42
r2 leaking	27
r2 lift	-24
r2 light	20
r2 lime	26
r2 lines	19
r2 ln	-21
r2 lock	-15
r2 master	24
r2 mate	-36
r2 me	-43
r2 mirror	-22
r2 missing	37
r2 monday	-38
r2 morning	-16
r2 must	-25
r2 night	-67
r2 nine	-42
r2 nineteen	-22
r2 ninety	27
r2 no	-36
r2 noon	-41
r2 not	16
r2 nothing	-44
r2 nuts	46
r2 of	-26
r2 off	-16
r2 oh	-29
r2 ok	18
r2 on	33
r2 one	-52
r2 ones	28
r2 open	31
r2 or	37
r2 order	-22
r2 outlets	27
r2 over	-22
r2 owner	-16
r2 paint	29
r2 panel	59
r2 paper	-39
r2 patch	35
r2 pick	-16
r2 plaster	26
r2 play	-49
r2 plus	21
r2 pop	-25
r2 pound	28
r2 primer	58
r2 pump	25
r2 put	31
r2 quarter	24
r2 rail	-18
r2 rain	-74
r2 range	-39
r2 return	17
r2 right	-17
r2 ring	54
r2 rolls	21
r2 room	-17
r2 run	-20
r2 s	-26
r2 same	20
r2 sand	19
r2 saturday	-38
r2 seal	24
r2 sent	17
r2 she's	27
r2 sheets	16
r2 shelf	26
r2 short	29
r2 should	-22
r2 showed	-33
r2 shower	-43
r2 shut	-23
r2 side	59
r2 signed	-50
r2 single	53
r2 site	65
r2 six	-44
r2 sixteen	23
r2 skip	-22
r2 slab	25
r2 so	-20
r2 sold	-19
r2 st	-29
r2 start	-27
r2 state	-32
r2 station	24
r2 still	-42
r2 stop	23
r2 sunday	-49
r2 swap	40
r2 take	-19
r2 ten	63
r2 tens	26
r2 that	-24
r2 that's	22
r2 the	60
r2 them	24
r2 then	53
r2 there's	-33
r2 these	35
r2 they	-35
r2 they're	31
r2 thing	-55
r2 thirteen	24
r2 this	18
r2 those	-42
r2 three	-48
r2 thursday	-50
r2 tiles	22
r2 today	35
r2 tomorrow	19
r2 trips	-26
r2 truck	20
r2 twelve	21
r2 twenty	27
r2 u	-18
r2 unit	-24
r2 upstairs	-39
r2 us	-65
r2 used	20
r2 want	34
r2 wants	-36
r2 was	33
r2 washer	23
r2 way	-36
r2 we	22
r2 we're	-25
r2 week	-36
r2 will	36
r2 window	-21
r2 windows	-15
r2 with	-39
r2 works	-40
r2 wrong	25
r2 x	49
r2 you're	54
r2. "	36
r2. 's	-30
r2. (	-40
r2. *	-24
r2. +	20
r2. .	30
r2. :	-80
r2. Name	-79
r2. letter	25
r2. n't	-42
r2. one	-52
r2. unit	68
r3 %	37
r3 '	-52
r3 10	-16
r3 12	23
r3 14	-49
r3 24	22
r3 28	-39
r3 3	32
r3 5	56
r3 6	-31
r3 8	32
r3 :	-68
r3 ;	-37
r3 a	-38
r3 about	38
r3 air	36
r3 and	42
r3 another	16
r3 app	-22
r3 are	27
r3 ask	-18
r3 back	-20
r3 bad	-70
r3 bag	-16
r3 bar	27
r3 base	-24
r3 bath	26
r3 before	-36
r3 behind	46
r3 black	66
r3 blinds	-17
r3 board	-41
r3 boards	34
r3 bottom	84
r3 box	36
r3 bracket	27
r3 brackets	-22
r3 breakers	22
r3 broken	29
r3 bulbs	17
r3 can	43
r3 case	27
r3 centre	27
r3 change	-21
r3 chipped	46
r3 clean	28
r3 close	-45
r3 closet	54
r3 coat	24
r3 color	-46
r3 coming	-22
r3 complaining	-24
r3 corner	38
r3 count	48
r3 counter	-18
r3 couplings	15
r3 cover	43
r3 cracked	-56
r3 crew	-70
r3 dead	29
r3 demo	38
r3 done	17
r3 door	63
r3 door's	18
r3 doors	18
r3 dot	-35
r3 down	28
r3 drain	25
r3 drawer	-22
r3 dry	19
r3 dryer	44
r3 dumpster	-29
r3 each	-29
r3 edge	53
r3 eight	-40
r3 eighteen	31
r3 either	-28
r3 eleven	-26
r3 end	40
r3 every	-20
r3 falls	-33
r3 family	-18
r3 fault	-28
r3 feet	31
r3 field	41
r3 fifteen	26
r3 filler	-19
r3 fine	23
r3 fixed	-30
r3 flapper	-32
r3 flashing	49
r3 flat	33
r3 foot	17
r3 for	-36
r3 friday	46
r3 from	-25
r3 front	16
r3 furnace	-16
r3 gang	52
r3 gap	24
r3 gauge	37
r3 get	-16
r3 glass	19
r3 go	21
r3 goes	17
r3 good	-40
r3 got	64
r3 gotta	21
r3 grab	-25
r3 grille	-41
r3 guys	-40
r3 hall	27
r3 hangers	30
r3 he	-31
r3 he's	-65
r3 head	-22
r3 her	31
r3 here	-18
r3 hinge	31
r3 hinges	-37
r3 hot	20
r3 how	-56
r3 i'll	-26
r3 i'm	-25
r3 if	-29
r3 in	-31
r3 inch	-35
r3 is	-51
r3 island	-24
r3 it	31
r3 it's	35
r3 kit	15
r3 kitchen	46
r3 knocked	-27
r3 landing	40
r3 late	-20
r3 lazy	-28
r3 leave	25
r3 left	-43
r3 leg	70
r3 legs	16
r3 length	48
r3 lid	20
r3 lift	-44
r3 like	-36
r3 long	42
r3 lot	-47
r3 manual	-28
r3 mate	-27
r3 meter	18
r3 middle	66
r3 min	-24
r3 minute	-24
r3 minutes	-16
r3 missing	-56
r3 monday	-23
r3 more	-20
r3 morning	-41
r3 move	16
r3 nail	-38
r3 need	22
r3 neutral	36
r3 new	-45
r3 nine	-22
r3 ninety	28
r3 no	-27
r3 nobody'll	-36
r3 nose	33
r3 not	18
r3 now	-17
r3 number	19
r3 off	-30
r3 oh	17
r3 old	-39
r3 on	-15
r3 once	-26
r3 one	-19
r3 one's	16
r3 order	31
r3 ought	26
r3 out	89
r3 outlets	-22
r3 over	-17
r3 paint	42
r3 panel	29
r3 panels	29
r3 parts	20
r3 people	-19
r3 plate	24
r3 pm	32
r3 porch	48
r3 quarter	23
r3 radio	-50
r3 ran	49
r3 range	-23
r3 required	-21
r3 reset	-24
r3 return	-18
r3 right	-40
r3 roll	-37
r3 room	-27
r3 run	48
r3 runs	-18
r3 s	21
r3 safe	49
r3 sand	15
r3 says	29
r3 screen	27
r3 screw	-17
r3 second	-15
r3 seven	-21
r3 seventh	-34
r3 seventy	67
r3 she's	21
r3 short	53
r3 side	-18
r3 sill	35
r3 sister	31
r3 sixteen	40
r3 sixty	32
r3 slope	26
r3 so	-28
r3 socket	15
r3 some	28
r3 stair	-16
r3 steps	25
r3 sticks	22
r3 still	-37
r3 stone	-34
r3 store	18
r3 straps	-28
r3 stripped	17
r3 stud	28
r3 studs	28
r3 supply	15
r3 switch	28
r3 tag	-18
r3 take	44
r3 tape	44
r3 tell	20
r3 ten	-40
r3 tens	23
r3 thank	-16
r3 then	-19
r3 there	-42
r3 thermostat	-39
r3 thirty	23
r3 this	-34
r3 those	30
r3 three	22
r3 through	-56
r3 tile's	40
r3 to	-17
r3 today	-52
r3 together	-37
r3 told	-68
r3 too	21
r3 towel	15
r3 tread	-50
r3 truck	-53
r3 tub	36
r3 tubes	23
r3 twelve	-32
r3 twenty	48
r3 two	-35
r3 under	-46
r3 up	-19
r3 use	42
r3 used	39
r3 van	25
r3 vent	-21
r3 wall	28
r3 was	-24
r3 waste	28
r3 water	-24
r3 way	48
r3 we	47
r3 we're	16
r3 where	30
r3 white	-28
r3 window	-15
r3 wire's	45
r3 x	24
r3 yesterday	20
r3. %	37
r3. '	-52
r3. -ed	47
r3. -ing	-18
r3. -ly	-26
r3. 1	25
r3. :	-68
r3. ;	-37
r3. unit	42
rule 	-42
rule eachOf	93
rule pair	179
rule quantity/decimal	55
rule quantity/fraction	-31
rule quantity/mixed	65
rule quantity/whole+taken-back	41
rule range	37
size 0	-22
size 1	-28
size 60	25
size 99	16
size 9999	-42
size more	-56
unit head 0	-46
unit head 1	-42
unit head none	-17
unit percent	-17
units 0	-52
units 1	40
units 2	41
word head 0	-24
word head 3	49
£ head none	-57
`;
