/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 1	70
# head 2	39
\$ head none	-115
's head 0	-42
's head none	114
( head none	24
+ head 0	20
+ head 1	23
+ head none	29
, head 0	46
, head 1	29
, head none	33
- head 0	-16
- head 1	19
- head none	-73
-ed head 0	33
-ed head 1	32
-ed head none	33
-ing head 0	27
-ing head none	20
-ly head 0	-19
-ly head none	68
-s head 0	71
-s head 1	48
-s head 2	-23
-s head none	25
. head 0	37
. head 1	31
/ head none	-134
0 l 	-26
0 l. #	-26
0 l. 1	-26
0 l. word	15
0 r 	-37
0 r. #	-37
0 r. word	-20
1 figures 1	47
1 head 0	33
1 head none	-85
1 l 
	-20
1 l +	23
1 l ,	58
1 l -	27
1 l .	32
1 l and	70
1 l another	-98
1 l at	48
1 l back	-20
1 l bath	-47
1 l be	47
1 l bottom	-52
1 l bought	70
1 l bring	57
1 l but	-39
1 l buy	67
1 l by	60
1 l cut	-30
1 l each	-51
1 l every	-102
1 l for	26
1 l fresh	-22
1 l get	75
1 l good	-31
1 l got	87
1 l grab	42
1 l had	56
1 l hall	40
1 l have	27
1 l he's	-19
1 l in	-29
1 l inch	62
1 l it	49
1 l just	72
1 l last	-105
1 l left	-65
1 l long	-16
1 l longer	-27
1 l me	47
1 l nd	-41
1 l need	53
1 l new	-101
1 l no	-28
1 l old	-77
1 l on	-22
1 l one	-16
1 l only	25
1 l order	50
1 l other	-100
1 l plus	55
1 l put	56
1 l reading	31
1 l red	41
1 l right	-44
1 l second	-45
1 l short	60
1 l so	23
1 l square	-42
1 l take	-39
1 l that	-101
1 l that's	-17
1 l the	-173
1 l there's	43
1 l this	-47
1 l type	-28
1 l up	25
1 l wait	-51
1 l want	61
1 l wants	25
1 l was	37
1 l what	-36
1 l wrong	-27
1 l. +	23
1 l. ,	58
1 l. -	27
1 l. -ed	-19
1 l. -ing	-59
1 l. -s	-20
1 l. .	32
1 l. /	-20
1 l. one	-20
1 l. unit	-33
1 l. word	-36
1 parts	67
1 r 	31
1 r 
	26
1 r )	-24
1 r -	-33
1 r .	-58
1 r 3	35
1 r 4	21
1 r :	-17
1 r at	-36
1 r b	16
1 r belt	-26
1 r bracket	45
1 r cracked	59
1 r door	23
1 r down	-25
1 r eight	26
1 r end	-41
1 r filter	16
1 r five	-17
1 r from	-31
1 r gasket	24
1 r get	-27
1 r go	-17
1 r goes	-26
1 r hand	-41
1 r has	-47
1 r head	30
1 r here	30
1 r hit	-43
1 r i	-32
1 r is	-43
1 r it's	-20
1 r kitchen	30
1 r late	-17
1 r leg	-38
1 r missing	32
1 r new	51
1 r nine	25
1 r of	-242
1 r off	65
1 r old	34
1 r on	18
1 r out	-29
1 r over	-18
1 r panel	-62
1 r reducer	28
1 r ring	44
1 r rod	-18
1 r sec	-23
1 r seven	19
1 r shelf	-39
1 r shot	-22
1 r side	-30
1 r so	-43
1 r spare	24
1 r they	-22
1 r thing	-28
1 r three	16
1 r time	-18
1 r to	-70
1 r towel	21
1 r two	-19
1 r was	-31
1 r wax	21
1 r way	-24
1 r wednesday	41
1 r when	21
1 r white	19
1 r with	-31
1 r you	32
1 r. #	31
1 r. )	-24
1 r. -	-33
1 r. -ed	-21
1 r. -ing	42
1 r. -s	-95
1 r. .	-58
1 r. /	26
1 r. 1	86
1 r. :	-17
1 r. one	28
1 r. word	-32
1 words	-56
12 0figures 2	-19
12 figures 1	-28
12 l 	30
12 l 
	-47
12 l .	-15
12 l :	56
12 l about	-19
12 l after	-39
12 l all	74
12 l and	37
12 l apartment	-28
12 l around	-44
12 l at	-127
12 l back	-19
12 l bay	-25
12 l be	-15
12 l before	-32
12 l between	-18
12 l bout	43
12 l box	-19
12 l breaker	-38
12 l buy	24
12 l by	36
12 l ch	-27
12 l channel	-34
12 l circuit	-74
12 l cloud	-16
12 l count	18
12 l counted	21
12 l cut	43
12 l detail	-19
12 l door	-54
12 l e	-23
12 l exit	-23
12 l flat	-28
12 l floor	-40
12 l for	16
12 l four	-20
12 l garage	65
12 l get	19
12 l got	60
12 l grab	36
12 l hang	16
12 l has	15
12 l house	-44
12 l hung	56
12 l is	40
12 l it	69
12 l it's	-44
12 l its	-41
12 l keynote	-26
12 l last	37
12 l least	60
12 l leaves	49
12 l line	-38
12 l lot	-39
12 l maybe	24
12 l me	17
12 l need	67
12 l needs	48
12 l nine	-18
12 l not	22
12 l number	-102
12 l number's	-23
12 l of	21
12 l order	-20
12 l ought	-34
12 l out	32
12 l over	-18
12 l page	-16
12 l past	-60
12 l port	-25
12 l poured	27
12 l pulling	21
12 l ran	59
12 l reading	-42
12 l replaced	21
12 l riser	-54
12 l rm	-30
12 l road	-23
12 l run	51
12 l saves	-35
12 l sent	33
12 l set	-19
12 l sheet	-25
12 l so	32
12 l solid	-26
12 l step	-28
12 l table	-23
12 l take	49
12 l that's	-37
12 l the	47
12 l there's	20
12 l through	-32
12 l til	-27
12 l to	20
12 l took	25
12 l tread	-27
12 l truck	-21
12 l unit	-76
12 l up	53
12 l us	52
12 l used	29
12 l we're	46
12 l wire's	23
12 l x	41
12 l zone	-21
12 l. #	30
12 l. -ed	77
12 l. -s	16
12 l. .	-15
12 l. /	-47
12 l. :	56
12 l. Name	-44
12 l. one	-32
12 parts	60
12 r 
	-20
12 r )	-38
12 r -	-18
12 r .	31
12 r 1	-24
12 r :	-58
12 r a	29
12 r anchors	38
12 r angry	-34
12 r at	32
12 r b	-43
12 r bad	-27
12 r boards	25
12 r bottom	17
12 r bucks	-25
12 r by	65
12 r dead	38
12 r deep	48
12 r done	38
12 r door	-36
12 r doors	51
12 r down	32
12 r downstairs	17
12 r drops	39
12 r eight	-21
12 r elbows	20
12 r fifty	-23
12 r for	53
12 r forty	-17
12 r four	-19
12 r from	-31
12 r gets	-26
12 r got	-18
12 r hangers	33
12 r heads	19
12 r here	38
12 r high	19
12 r hinges	21
12 r hole	-55
12 r i	16
12 r in	-56
12 r instead	36
12 r is	-29
12 r it	-16
12 r last	-25
12 r left	71
12 r lives	-26
12 r long	-22
12 r more	55
12 r needs	-42
12 r no	-47
12 r notice	-56
12 r o'clock	-43
12 r of	54
12 r old	-39
12 r on	19
12 r openings	24
12 r or	-19
12 r out	-61
12 r outlets	19
12 r over	26
12 r panel	-32
12 r rooms	20
12 r says	-27
12 r sharp	-34
12 r shift	-56
12 r short	47
12 r shows	-33
12 r so	39
12 r studs	49
12 r the	26
12 r then	34
12 r this	-16
12 r tiles	24
12 r till	-21
12 r times	-39
12 r tomorrow	-40
12 r total	16
12 r wants	-20
12 r was	-32
12 r waste	28
12 r we	-19
12 r when	-28
12 r work	36
12 r x	24
12 r. 's	56
12 r. )	-38
12 r. -	-18
12 r. -ed	44
12 r. -ing	19
12 r. -s	42
12 r. .	31
12 r. /	-20
12 r. :	-58
12 r. Name	-35
12 r. one	-78
12 words	21
12 words round	-24
2 l 	31
2 l 
	-37
2 l (	34
2 l +	22
2 l ,	18
2 l -	-26
2 l .	23
2 l :	17
2 l about	32
2 l addendum	-15
2 l and	-28
2 l another	34
2 l at	-79
2 l back	40
2 l bath	-51
2 l bay	-63
2 l be	21
2 l bed	-29
2 l bedroom	-73
2 l bought	35
2 l bring	51
2 l buy	43
2 l by	20
2 l coat	-28
2 l count	-25
2 l day	-66
2 l drawer	-34
2 l drove	-22
2 l flat	-41
2 l for	37
2 l fourteen	-19
2 l get	43
2 l gets	42
2 l got	-43
2 l have	42
2 l header's	25
2 l in	-45
2 l it	32
2 l it's	36
2 l maybe	67
2 l me	-53
2 l need	36
2 l needs	18
2 l number	-54
2 l of	-66
2 l one	-25
2 l other	24
2 l phase	-16
2 l press	-22
2 l put	16
2 l ran	59
2 l says	-29
2 l so	35
2 l t	-24
2 l takes	-25
2 l the	67
2 l then	-36
2 l there's	-63
2 l took	20
2 l two	25
2 l type	-23
2 l unit	-18
2 l up	42
2 l us	-41
2 l use	19
2 l used	18
2 l wants	49
2 l with	30
2 l zone	-26
2 l. #	31
2 l. 's	70
2 l. (	34
2 l. +	22
2 l. ,	18
2 l. -	-26
2 l. .	23
2 l. /	-37
2 l. 1	31
2 l. :	17
2 l. letter	-19
2 l. one	-23
2 l. unit	-63
2 parts	30
2 r ,	-22
2 r -	-31
2 r 3	-23
2 r :	-41
2 r a	-38
2 r at	75
2 r can	-50
2 r cents	-28
2 r clamps	21
2 r couplings	23
2 r don't	62
2 r doors	64
2 r eight	-37
2 r elbows	17
2 r extra	15
2 r fall	37
2 r five	31
2 r gang	-82
2 r guys	-62
2 r had	-23
2 r half	34
2 r high	31
2 r hinges	23
2 r i'm	-16
2 r in	53
2 r is	-34
2 r left	63
2 r man	-32
2 r more	63
2 r need	30
2 r new	20
2 r nil	-34
2 r no	17
2 r nos	18
2 r o'clock	-30
2 r of	79
2 r one	-48
2 r out	47
2 r panel	-48
2 r part	-55
2 r pole	-65
2 r screws	36
2 r shakes	-38
2 r short	-24
2 r sides	-24
2 r slope	24
2 r spare	15
2 r starts	-16
2 r supply	19
2 r ten	16
2 r the	-52
2 r then	34
2 r times	-31
2 r to	74
2 r tomorrow	-25
2 r twenty	20
2 r two	29
2 r window	-42
2 r windows	38
2 r wrongs	-50
2 r. 's	-17
2 r. ,	-22
2 r. -	-31
2 r. -ed	-32
2 r. -ing	-38
2 r. -ly	19
2 r. -s	17
2 r. 1	16
2 r. :	-41
2 r. letter	-15
2 r. n't	38
2 r. one	69
2 r. word	20
20 figures 2	17
20 l ,	29
20 l .	-29
20 l a	47
20 l all	29
20 l and	31
20 l at	48
20 l code	-17
20 l counted	19
20 l every	56
20 l exit	-16
20 l for	-33
20 l got	60
20 l has	16
20 l house	-48
20 l in	-45
20 l is	83
20 l it	20
20 l item	-30
20 l like	-22
20 l maybe	23
20 l me	-24
20 l of	18
20 l on	-22
20 l r	-76
20 l read	36
20 l reading	20
20 l says	61
20 l set	54
20 l sheet	-16
20 l side	18
20 l so	30
20 l sweet	-31
20 l that's	-26
20 l the	-31
20 l two	27
20 l under	35
20 l uppers	17
20 l used	30
20 l wants	-32
20 l. ,	29
20 l. -ing	57
20 l. -s	18
20 l. .	-29
20 l. letter	-68
20 l. unit	45
20 l. word	31
20 parts	42
20 r 	18
20 r .	39
20 r at	30
20 r before	19
20 r bucks	-51
20 r by	41
20 r centers	32
20 r clips	22
20 r down	-61
20 r even	16
20 r for	-16
20 r hung	31
20 r i	37
20 r more	20
20 r ninety	-35
20 r ninth	-27
20 r oc	43
20 r of	15
20 r off	-28
20 r on	19
20 r risers	20
20 r second	-36
20 r the	-17
20 r to	17
20 r total	21
20 r treads	32
20 r twelve	-26
20 r twenty	-22
20 r two	-67
20 r we	26
20 r. #	18
20 r. 's	33
20 r. -s	34
20 r. .	39
20 r. letter	33
20 r. one	-121
20 r. word	33
5 l 	33
5 l 
	-60
5 l ,	70
5 l :	17
5 l a	-49
5 l about	-48
5 l and	26
5 l another	36
5 l apt	-28
5 l at	-85
5 l bay	-50
5 l be	54
5 l bed	-46
5 l bedroom	-17
5 l bring	28
5 l by	-46
5 l code	-42
5 l cure	18
5 l cut	27
5 l day	-58
5 l dock	-27
5 l door	-45
5 l fan	52
5 l five	-21
5 l flat	-52
5 l for	38
5 l found	24
5 l get	43
5 l gets	23
5 l got	34
5 l had	-19
5 l has	47
5 l have	29
5 l here	-15
5 l hung	16
5 l in	52
5 l it	56
5 l it's	-26
5 l kitchen	36
5 l lane	-25
5 l last	26
5 l leaves	18
5 l left	39
5 l level	-43
5 l loop	-44
5 l lvl	-44
5 l me	38
5 l mode	-49
5 l need	35
5 l needs	16
5 l no	-16
5 l not	49
5 l number	-52
5 l of	-23
5 l on	-19
5 l only	53
5 l or	18
5 l order	-20
5 l other	79
5 l out	58
5 l over	83
5 l paid	-21
5 l par	-23
5 l put	34
5 l replaced	19
5 l rev	-25
5 l room	-59
5 l says	32
5 l shelf	-35
5 l short	43
5 l slab	15
5 l so	25
5 l step	-16
5 l strike	-22
5 l switch	-35
5 l that	37
5 l that's	22
5 l the	-43
5 l till	-41
5 l took	17
5 l truck	-17
5 l twelve	-15
5 l two	-23
5 l type	-19
5 l unit	-49
5 l up	34
5 l us	48
5 l use	23
5 l used	37
5 l wall	21
5 l want	54
5 l wants	38
5 l was	40
5 l x	20
5 l zone	-60
5 l. #	25
5 l. 's	-26
5 l. ,	70
5 l. -ed	50
5 l. -s	83
5 l. /	-63
5 l. :	17
5 l. Name	-54
5 l. letter	-17
5 l. one	-60
5 l. unit	-47
5 r )	-50
5 r -	-46
5 r 2	34
5 r :	-27
5 r aa	18
5 r amigos	-44
5 r are	24
5 r at	29
5 r b	-23
5 r baths	35
5 r batts	-41
5 r before	30
5 r blinds	22
5 r brackets	37
5 r bulbs	21
5 r business	-33
5 r but	52
5 r by	-34
5 r came	-33
5 r closets	38
5 r dead	25
5 r digits	-23
5 r doors	-33
5 r eight	19
5 r extra	61
5 r five	-20
5 r for	49
5 r four	-49
5 r guys	-41
5 r had	-23
5 r has	-25
5 r hinges	19
5 r hole	-38
5 r hooks	50
5 r in	39
5 r is	-72
5 r layers	37
5 r left	40
5 r lights	23
5 r more	72
5 r nail	38
5 r o'clock	-47
5 r oclock	-27
5 r of	88
5 r on	-41
5 r one	-16
5 r outlets	44
5 r over	30
5 r per	56
5 r pulls	16
5 r says	-44
5 r screens	51
5 r should	23
5 r slake	39
5 r spaces	33
5 r stars	-61
5 r still	58
5 r the	-68
5 r then	-22
5 r they	19
5 r things	-48
5 r three	23
5 r tile	36
5 r times	-82
5 r to	23
5 r today	-33
5 r tomorrow	-40
5 r tripped	-30
5 r twenty	18
5 r way	-65
5 r weekend	-50
5 r went	37
5 r will	30
5 r windows	27
5 r with	-19
5 r won't	23
5 r x	35
5 r. 's	-26
5 r. )	-50
5 r. -	-46
5 r. -ing	22
5 r. -s	31
5 r. :	-27
5 r. n't	-17
5 r. one	-29
5 r. unit	27
60 figures 2	16
60 l 	-27
60 l \$	-33
60 l -	-59
60 l :	16
60 l a	35
60 l about	-27
60 l after	18
60 l are	27
60 l at	94
60 l breaker	-23
60 l by	45
60 l catch	-16
60 l cut	35
60 l dry	44
60 l error	-39
60 l from	49
60 l get	16
60 l got	36
60 l he's	-67
60 l house	81
60 l in	-32
60 l is	48
60 l it	-18
60 l lot	-31
60 l maybe	-29
60 l need	27
60 l needs	21
60 l net	-48
60 l no	26
60 l not	52
60 l number	-75
60 l off	-30
60 l on	25
60 l ordered	20
60 l plate	40
60 l po	-16
60 l point	15
60 l put	-35
60 l reading	16
60 l say	39
60 l says	46
60 l set	33
60 l side	31
60 l so	24
60 l through	43
60 l to	61
60 l traffic	-28
60 l up	-69
60 l wall	27
60 l wants	43
60 l was	38
60 l with	17
60 l x	38
60 l. #	-27
60 l. \$	-33
60 l. 's	46
60 l. -	-59
60 l. -ing	56
60 l. -ly	24
60 l. -s	-23
60 l. 1	-26
60 l. :	16
60 l. one	-41
60 l. unit	41
60 l. word	43
60 r .	45
60 r :	-19
60 r a	16
60 r all	51
60 r at	51
60 r before	32
60 r blocks	34
60 r boards	22
60 r brick	24
60 r bucks	-40
60 r chance	-28
60 r dollars	-37
60 r down	74
60 r fifty	-33
60 r flat	16
60 r from	-20
60 r high	45
60 r i	26
60 r if	-24
60 r miles	-39
60 r not	35
60 r oc	25
60 r of	-33
60 r on	-49
60 r or	-46
60 r pavers	34
60 r pulls	21
60 r so	42
60 r then	36
60 r they	18
60 r thick	29
60 r to	-37
60 r up	18
60 r week	-33
60 r which	17
60 r wide	40
60 r with	-28
60 r x	20
60 r. 's	22
60 r. -s	-21
60 r. .	45
60 r. /	37
60 r. 1	-26
60 r. :	-19
60 r. letter	30
60 r. one	-92
60 r. word	46
99 figures 2	46
99 l \$	-61
99 l -	19
99 l a	-40
99 l an	-59
99 l and	22
99 l at	66
99 l by	18
99 l doing	-21
99 l for	-36
99 l got	-34
99 l humidity's	31
99 l is	-28
99 l of	-36
99 l only	28
99 l over	-26
99 l past	42
99 l reading	20
99 l says	-35
99 l that	-37
99 l to	49
99 l under	25
99 l was	47
99 l wide	16
99 l. \$	-61
99 l. -	19
99 l. -ing	28
99 l. -ly	48
99 l. -s	-23
99 l. one	-40
99 l. word	19
99 parts	-57
99 r ,	49
99 r -	23
99 r before	25
99 r bucks	-29
99 r by	19
99 r for	-28
99 r is	-35
99 r next	-36
99 r of	50
99 r on	28
99 r or	31
99 r out	28
99 r so	33
99 r to	-27
99 r. ,	49
99 r. -	23
99 r. -ed	-29
99 r. -s	-60
99 r. one	-17
99 words	17
999 0figures 4	-59
999 l 	-33
999 l \$	-44
999 l ,	-28
999 l -	-27
999 l .	29
999 l 555	-19
999 l a	-34
999 l about	60
999 l and	80
999 l at	41
999 l be	23
999 l extension	-16
999 l f	-19
999 l for	27
999 l from	-47
999 l going	43
999 l in	-49
999 l it	-47
999 l it's	20
999 l laid	53
999 l lot	-20
999 l no	37
999 l on	-24
999 l out	39
999 l reading	23
999 l reads	38
999 l rise	36
999 l rm	-39
999 l room	-38
999 l section	-30
999 l set	30
999 l side's	28
999 l suite	-24
999 l that's	35
999 l the	-63
999 l there	-47
999 l there's	26
999 l to	26
999 l two	38
999 l wants	15
999 l was	-19
999 l. #	-34
999 l. \$	-44
999 l. 's	55
999 l. ,	-28
999 l. -	-27
999 l. -ing	41
999 l. -s	89
999 l. .	29
999 l. 1	-42
999 l. one	18
999 oh	-41
999 r ,	22
999 r -	-53
999 r .	17
999 r 555	-22
999 r :	-21
999 r a	-55
999 r across	22
999 r agree	-42
999 r already	-20
999 r area	-41
999 r at	-15
999 r before	-35
999 r bucks	-35
999 r by	18
999 r centres	32
999 r crew	-18
999 r deep	24
999 r for	-42
999 r going	70
999 r high	56
999 r i	20
999 r not	27
999 r number	-25
999 r of	93
999 r off	51
999 r on	19
999 r one	25
999 r over	-58
999 r screws	44
999 r so	18
999 r to	45
999 r two	-15
999 r when	-23
999 r wide	19
999 r x	29
999 r. 's	20
999 r. ,	22
999 r. -	-53
999 r. -s	17
999 r. .	17
999 r. 1	-57
999 r. :	-21
999 r. letter	44
999 r. unit	-54
999 r. word	15
999 swallowed	-23
999 swallowed round	-28
999 words	78
999 words round	40
9999 figures 4	-53
9999 figures 5	-20
9999 l 	-25
9999 l ,	-30
9999 l at	113
9999 l for	-28
9999 l from	-39
9999 l in	-24
9999 l is	-24
9999 l switch	-23
9999 l the	-17
9999 l to	20
9999 l. #	-25
9999 l. 's	67
9999 l. ,	-30
9999 l. unit	-23
9999 l. word	-27
9999 r 	-19
9999 r ,	16
9999 r in	-22
9999 r long	50
9999 r so	20
9999 r the	25
9999 r to	37
9999 r x	-25
9999 r. #	-20
9999 r. ,	16
9999 r. letter	-25
9999 r. unit	-25
9999 words	-26
9999 words round	23
: head 0	42
: head 1	27
: head none	44
< head none	18
Name head none	-112
a a	-43
a aa	28
a about	-49
a across	29
a adds	-47
a aff	19
a agree	-42
a ain't	39
a alder	-27
a all	-35
a along	47
a already	-21
a also	47
a am	-17
a amigos	-44
a an	-39
a anchor	19
a anchors	51
a and	31
a angry	-34
a another	-45
a anyone	-42
a anything	37
a apart	69
a app	-23
a are	37
a area	-22
a as	-40
a ask	-28
a at	22
a away	-60
a b	-50
a baby	-30
a back	66
a backs	-38
a bad	-37
a bag	16
a bags	23
a balusters	-18
a banksia	-31
a bar	35
a bars	47
a base	50
a bases	-27
a bath	38
a bathroom	-23
a baths	44
a batts	-36
a bay	-42
a be	50
a bead	26
a beam	23
a bearing	19
a bedroom	-54
a been	-18
a before	27
a behind	34
a below	32
a bent	19
a between	21
a bin	22
a birch	-41
a bit	23
a black	65
a blade	20
a blades	40
a blank	20
a blind	-25
a blinds	16
a block	21
a blocks	78
a blue	-32
a boards	76
a bolt	46
a bolts	54
a boots	-21
a bottom	57
a bought	64
a boxes	42
a bracket	52
a brackets	48
a brass	69
a brick	36
a broken	41
a brown	19
a brushes	26
a bucks	-61
a built	-39
a bulbs	39
a bumpers	34
a buried	18
a burned	40
a bushing	28
a business	-55
a but	38
a buy	27
a buzzer	-47
a by	38
a c	-33
a cable	-42
a call	-29
a calling	-42
a came	32
a can	70
a can't	-51
a cans	54
a cap	47
a care	-36
a carpet	-22
a carton	-23
a case	40
a casing	25
a caulk	36
a ceiling	30
a center	70
a centers	66
a centre	36
a centres	35
a cents	-39
a chance	-44
a chimney	51
a chipped	72
a chrome	-17
a circuit	22
a city	-58
a clamps	46
a clean	27
a clear	41
a client	-24
a clips	76
a closed	38
a closet	47
a closets	28
a co	18
a coat	-73
a code	70
a coffee	32
a coil	38
a cold	31
a color	-21
a come	-23
a comes	-33
a coming	25
a complaining	-20
a complete	-36
a concrete	-34
a contact	20
a cord	-22
a corner	57
a cost	-27
a could	-35
a count	47
a countertop	-19
a couplings	48
a court	-17
a cove	21
a cover	25
a covers	-41
a crack	-28
a cracked	84
a crew	-94
a damaged	41
a dash	-26
a day	-62
a days	-79
a dead	52
a deal	-43
a deck	-15
a decks	31
a deep	102
a degree	28
a delivered	18
a den	25
a dentists	-81
a digits	-23
a disposal	-50
a does	-21
a doesn't	-19
a doing	-53
a dollar	-55
a dollars	-60
a dont	-21
a door's	42
a doors	28
a dot	-39
a double	22
a down	-19
a downstairs	17
a dozen	-81
a drain	20
a drawer	-19
a drip	70
a driveway	-19
a drops	49
a dry	31
a dryer	-19
a dumpster	-28
a duplex	18
a each	52
a easy	-37
a edge	56
a eggshell	54
a eighths	-26
a eights	36
a eighty	-28
a either	-26
a elbows	71
a eleventh	-45
a elm	-36
a elsewhere	33
a em	74
a empty	-33
a end	27
a ends	55
a enough	20
a euro	-90
a even	45
a every	18
a everybody	-70
a everywhere	-37
a except	41
a excuses	-33
a expansion	28
a extra	39
a faced	-26
a factory	25
a fall	36
a falls	-37
a family	16
a fan	30
a fan's	36
a fans	25
a far	56
a faucet	-25
a fault	-46
a fella	-19
a fence	23
a field	37
a fifteen	-22
a fifteens	23
a fifty	26
a figure	22
a filter	44
a find	-51
a fine	29
a fingers	-30
a finish	-28
a finished	23
a fit	28
a fix	-58
a fixed	-28
a flapper	-53
a flashing	48
a flat	55
a flex	-43
a flicker	26
a flood	27
a flush	-23
a foam	-27
a foot	51
a footers	66
a footings	21
a for	30
a forget	-19
a forgets	-16
a fours	23
a fourteen	32
a framed	-43
a friday	44
a fridays	-29
a front	38
a frost	-30
a ft	-35
a full	48
a furnace	-42
a g	21
a gal	15
a gallon	-29
a game	-23
a gang	-51
a garage	35
a gary	29
a gasket	32
a get	-49
a gets	-34
a gfcis	41
a give	75
a glass	66
a glue	-21
a glued	-43
a go	44
a god	-22
a going	15
a gone	-28
a gonna	20
a good	60
a got	19
a gotta	-34
a grade	59
a grate	-42
a grease	-16
a grid	16
a grille	-75
a grit	21
a ground	-40
a grout	63
a gun	-37
a guy	-47
a guys	-98
a had	-31
a hall	125
a hand	-34
a handle	-78
a hang	17
a hangers	98
a hanging	25
a happy	33
a has	-93
a hasn't	-17
a hatch	-19
a have	23
a he	-43
a he's	-81
a head	-55
a headed	-24
a heads	20
a heater	27
a heavy	25
a held	-15
a helpers	-28
a hes	-22
a high	73
a him	-66
a hinge	27
a hire	-29
a his	-19
a holding	24
a hole	-82
a holes	20
a home	-15
a hooks	41
a hot	30
a hour	-25
a hours	-35
a house	43
a hums	-52
a hundred	22
a hundreds	-35
a hung	-29
a hydro	-35
a i	-53
a i'm	-15
a i've	41
a ice	-17
a if	-25
a in	25
a inch	30
a inches	35
a instead	48
a into	30
a invoice	-39
a iron	-34
a is	-46
a ish	-39
a island	-34
a it	-25
a it'll	-22
a it's	-50
a jacks	17
a job	-49
a joist	32
a july	-61
a keeping	18
a keeps	-24
a key	-57
a kid	-22
a killed	-21
a kinds	-55
a kit	57
a kitchen	17
a knobs	43
a knocked	-22
a label	15
a labeled	32
a ladder	-20
a ladders	21
a laid	43
a lamp	28
a landing	53
a laptop	-19
a larch	-38
a laser	45
a last	-38
a late	-69
a latest	-58
a lath	-17
a lavs	37
a lay	50
a layer	-64
a layers	37
a lazy	-24
a lead	39
a leaking	25
a leaks	-19
a leaves	19
a left	72
a leg	78
a legs	61
a length	24
a level	-26
a lever	17
a lid	43
a lift	-66
a light	32
a lights	30
a like	-66
a lime	25
a line	-30
a list	-27
a litre	42
a live	19
a lives	-26
a ln	-19
a lol	-19
a long	95
a longer	19
a look	-26
a looks	-57
a loose	21
a lot	-64
a luck	-51
a lunch	-21
a m10	17
a mailbox	-26
a make	-24
a man	-16
a manifold	16
a manual	-29
a maple	-49
a march	-18
a master	15
a mate	-66
a matt	31
a max	56
a me	-19
a men	-37
a metal	-46
a meter	42
a middle	68
a miles	-39
a mill	-36
a minimum	37
a minutes	-16
a mirror	-32
a missing	23
a mix	49
a mm	20
a moisture	27
a mon	39
a monday	-44
a more	74
a morning	-36
a mosaic	27
a move	45
a moved	-71
a moves	-42
a muppet	-31
a n	23
a nails	44
a need	37
a needs	-56
a never	-17
a new	29
a next	-36
a night	-68
a nil	-34
a nine	-55
a ninety	21
a ninth	-21
a no	-22
a nobody	19
a nobody'll	-32
a noon	-40
a north	32
a nos	35
a nose	33
a not	-32
a nothing	-49
a notice	-82
a number	17
a nuts	52
a o'clock	-79
a oc	63
a oclock	-42
a off	29
a office	-26
a offset	-29
a oh	-33
a ok	-34
a once	-26
a ones	23
a open	18
a opened	19
a opening	27
a openings	24
a order	41
a ordered	29
a other	-53
a ought	25
a outlets	78
a outside	-35
a oven	22
a over	15
a own	20
a packers	-64
a paint	40
a painters	-21
a painting	27
a palings	21
a pan	32
a panel	-55
a panels	52
a paper	-43
a park	-27
a part	-55
a parts	-22
a pascals	22
a pass	-31
a passed	-23
a past	-63
a pattern	-53
a pavers	52
a pay	-31
a pendants	52
a people	-23
a per	78
a picked	18
a pickets	20
a piece	24
a pieces	16
a piers	28
a pinched	-28
a pine	55
a pinned	20
a pins	17
a pipe	34
a place	-36
a planks	19
a plaster	25
a plate	39
a plates	48
a play	-51
a plenty	63
a plumber	-22
a ply	-19
a plywood	36
a pm	-16
a pocket	16
a podium	-67
a point	-27
a points	16
a pole	-76
a pop	-20
a porcelain	16
a porch	22
a post	28
a potato	-52
a powder	-16
a primer	44
a proud	22
a pulled	-30
a pulls	46
a pump	37
a punch	-17
a punched	-18
a quart	17
a quid	-43
a quiet	-30
a quit	-33
a radiator	18
a radio	-94
a rafters	51
a rail	26
a rails	18
a rain	-77
a raise	50
a ran	32
a rang	-29
a range	-45
a reads	-27
a ready	-52
a rear	-25
a receps	17
a receptacle	18
a receptacles	51
a reducer	54
a remain	24
a replaced	-19
a required	-20
a reset	-25
a return's	-21
a ridge	24
a right	-17
a ring	34
a rise	24
a riser	31
a risers	44
a rm	18
a rock	31
a rolled	-23
a roller	26
a roof	-34
a room	36
a rooms	20
a rotten	16
a rough	17
a rubber	28
a rule	-19
a run	39
a running	23
a runs	-16
a safe	50
a sags	-30
a said	-62
a sand	35
a satin	34
a says	-53
a school	-20
a sconces	37
a score	-20
a scratched	27
a screen	52
a screens	18
a screwed	27
a screws	72
a scribed	-17
a seal	17
a sealed	34
a season	-20
a sec	-23
a second	-80
a send	-29
a series	-19
a set	37
a seventeen	-20
a seventh	-45
a seventy	52
a shakes	-33
a sharp	-49
a she	30
a she's	-27
a shed	49
a sheet	-18
a shelf	41
a shift	-62
a shims	33
a shingles	20
a short	95
a should	27
a show	-16
a showed	-44
a shower	-29
a shows	-22
a shut	-32
a side	29
a signed	-41
a silicone	-34
a sill	32
a since	-27
a sink	36
a sister	32
a site	32
a sits	-22
a six	19
a sixes	-21
a sixteen	78
a sixteenths	-35
a skip	-23
a slab	39
a slabs	-33
a slake	39
a slats	-55
a slope	92
a slow	-41
a smoke	15
a so	33
a soft	18
a sold	-20
a some	40
a somebody's	49
a something	-46
a sorry	-24
a sound	-15
a south	23
a space	43
a spacer	-20
a spacers	22
a spaces	33
a spare	36
a spares	17
a spot	17
a spout	32
a spring	-50
a square	-42
a squeaks	38
a st	-34
a stainless	32
a stair	-19
a star	-18
a stars	-61
a starts	-22
a state	-35
a station	20
a step	-35
a steps	18
a stick	30
a sticks	-34
a still	-34
a stock	31
a stone	-41
a stool	-43
a stopper	17
a stops	-35
a store	21
a storm	-18
a story	-21
a straight	-38
a straps	19
a strike	27
a stroke	-20
a stuck	-23
a stud	28
a studs	110
a suction	30
a sunday	-60
a supplier	-32
a supply	44
a sure	-28
a sweep	35
a switch	64
a switches	17
a tag	-28
a take	28
a takes	16
a tall	42
a tap	76
a tape	44
a tee	33
a telling	-18
a template	-28
a tens	38
a thank	-19
a that	-19
a there	-22
a there's	-21
a theres	35
a these	39
a they	-53
a they're	64
a thick	62
a thing	-78
a things	-79
a think	-28
a thinset	33
a this	-34
a those	-22
a thousand	-47
a throughout	16
a thumb	-37
a tied	-20
a ties	-32
a tile	69
a tile's	44
a tiles	64
a time	-18
a times	-150
a to	22
a toe	-31
a together	-64
a toggles	28
a toilet	44
a toilets	42
a told	-60
a tomorrow	-18
a too	-54
a took	-28
a top	21
a total	56
a touch	-28
a touched	-18
a towel	38
a traffic	-29
a traps	30
a travelers	-18
a tray	-21
a tread	-51
a treads	53
a treated	-16
a trees	22
a trip	23
a tripped	-37
a trips	-28
a tub	44
a tube	73
a tuesday	-38
a turned	-42
a twelve	24
a twenty	25
a twisted	19
a two	25
a twos	35
a type	30
a u	-36
a under	-21
a unless	-24
a until	39
a up	45
a upper	23
a upstairs	-32
a us	-81
a usb	18
a use	20
a used	47
a v	-32
a valve	38
a van	40
a vanities	20
a vanity	-27
a vent	23
a vents	-17
a vinyl	39
a volt	25
a w	36
a wafers	20
a walk	-18
a wall	68
a walls	18
a wanted	21
a wants	-15
a was	-35
a washers	30
a waste	53
a watch	-21
a water	-50
a way	-77
a ways	-59
a we	36
a wear	-30
a wednesday	36
a week	-50
a weekend	-16
a were	16
a what	20
a whatever	-42
a when	-18
a which	43
a while	18
a white	26
a who	-32
a whole	-27
a wide	60
a will	59
a window	-46
a windows	35
a wiped	-36
a wire	-22
a wire's	41
a without	-18
a word	-44
a work	44
a works	-56
a would	-38
a wouldn't	-92
a wrongs	-50
a x	67
a yard	-85
a yesterday	15
a yet	-55
a you	-22
a you're	58
a zero	-23
a zip	-61
b a	-39
b about	16
b above	41
b absent	-70
b ac	30
b across	16
b actually	19
b add	93
b addendum	-15
b address	-29
b adds	34
b adhesive	40
b after	20
b against	34
b air	23
b aisle	-50
b alarm's	-17
b allow	76
b already	21
b alright	-44
b amp	111
b amps	102
b an	-46
b anchors	34
b and	33
b another	-21
b anti	18
b any	-18
b anything	39
b apart	60
b apartment	-53
b apiece	32
b appliance	22
b apt	-41
b architect	39
b are	41
b arm	-24
b around	-19
b arrived	40
b arsenal	-35
b as	22
b ask	-18
b asked	58
b at	17
b attic	-20
b b	-54
b back	-17
b badge	-18
b bags	21
b bakery	-20
b balusters	-19
b bar	56
b base	34
b basement	-61
b basin	17
b bath's	21
b bathroom	-15
b bay	-41
b bays	-85
b bead	24
b beam	-31
b bearing	-35
b beat	-31
b because	27
b bed	-66
b bedroom	-74
b bedrooms	-23
b been	-35
b behind	16
b belts	27
b bench	52
b bent	38
b better	34
b between	-60
b big	-54
b billed	-51
b bin	-49
b birdied	-60
b black	31
b blade	-16
b bldg	-45
b blew	21
b blinds	24
b blood	-92
b blower	51
b boards	33
b bolted	31
b bolts	58
b booked	-47
b boss	-44
b both	-47
b bought	54
b bout	21
b box	-16
b boxes	25
b bracket	18
b brackets	40
b break	-50
b breaker	-33
b breaker's	63
b breakers	58
b brick	16
b bring	150
b bringing	39
b broke	66
b brought	77
b buckets	25
b building	-35
b built	-23
b bulb	31
b bumpers	43
b bunnings	-48
b burned	42
b busted	-40
b but	17
b buy	82
b c	-26
b cable	31
b call	27
b calls	49
b cam	-71
b came	78
b camera	-50
b can	27
b can't	-16
b cans	38
b cap	29
b card	35
b carpet	-37
b carton	32
b cartons	-17
b cartridge	-56
b casing	-41
b catch	-21
b cats	-31
b caulk	-30
b cause	23
b cbd	21
b cell	-29
b center	45
b centres	22
b cfm	57
b ch	-63
b changed	58
b channel	-73
b chapter	-24
b charge	-52
b charged	-58
b chelsea	-22
b chimney	-36
b circuit	-74
b city	-18
b clamps	20
b class	-37
b cleaned	29
b clear	18
b clearance	18
b clips	35
b close	23
b closer	40
b closes	-49
b cloud	-16
b co	28
b coat	23
b code's	-66
b cold	45
b collar	44
b color's	-16
b colour	-27
b column	-25
b comes	-21
b coming	-22
b composite	18
b confirmation	-30
b control	42
b copper	28
b corner	33
b cost	-15
b count	19
b counted	-18
b counter	-31
b counter's	31
b county	-46
b cover	40
b cracked	52
b crane's	-34
b crew	-17
b crowned	55
b cure	48
b cut	88
b cutout's	19
b cycles	53
b cylinder	36
b damper	28
b dash	-32
b day	-89
b days	-32
b dead	29
b deck	42
b deep	42
b degrees	44
b delivered	21
b den	66
b desk	-60
b detail	-31
b diagonals	74
b dialed	22
b did	-43
b didn't	-26
b dining	-30
b dip	-26
b display	-60
b do	-71
b dock	-27
b doing	-49
b don't	-27
b done	22
b door	-62
b double	-30
b down	59
b downspouts	16
b downstairs	36
b dozen	-23
b drain	17
b draw	46
b drawer	-45
b drawing	45
b draws	26
b drew	-25
b drill	20
b drop	49
b drops	32
b drove	20
b dry	73
b dryer	-26
b drywall	-50
b drywall's	33
b duct	20
b duct's	21
b dwg	-29
b dye	-17
b e	-27
b each	74
b east	-36
b edge	42
b egress	-67
b eight	29
b eighteen	39
b eighth	16
b eighths	66
b eighty	-40
b elbows	29
b electrician	-36
b elevation	-19
b elevator	-58
b eleven	16
b end	34
b ends	-42
b engine	-18
b entry	-23
b episode	-28
b epoxy	-38
b error	-47
b exam	-35
b except	22
b exit	-52
b expires	-93
b extension	-15
b exterior	-50
b f	-21
b failed	-15
b fall	-16
b fall's	15
b falls	-37
b fan	41
b fans	36
b far	39
b feeder	-25
b feeder's	-33
b feeds	-27
b feet	27
b fell	54
b field	-33
b fifteen	39
b fifty	52
b figure	20
b fill	-44
b fit	-54
b fitted	-15
b fix	-52
b flange	29
b flashes	-85
b flat	-45
b flight	-53
b flip	-34
b flood	21
b floor	-18
b floor's	24
b flue	48
b flush	-22
b footers	37
b footing	22
b footing's	44
b footy's	-18
b forms	40
b formula	-35
b found	54
b four	47
b fourteen	20
b fourth	-53
b frame	-40
b framed	32
b framing	-23
b friday	-26
b from	-15
b full	19
b g	-32
b gallon	33
b gallons	23
b game	-28
b gap	49
b gap's	25
b garage	73
b gasket	20
b gaskets	23
b gate	-36
b gate's	-20
b gauge	27
b gauged	31
b generator	87
b get	54
b gets	52
b getting	27
b gimme	48
b gives	-37
b glue	55
b glued	20
b go	20
b goal	-45
b goes	29
b gone	23
b got	23
b gotta	49
b gr	45
b grab	56
b gray	-25
b great	-17
b green	-47
b grid	27
b ground	17
b grout	34
b grout's	55
b guide	-27
b guy	18
b guys	-35
b had	42
b half	55
b hall	43
b hallway	29
b handed	-31
b hang	18
b hangers	46
b hard	33
b hardware	-34
b has	51
b hatch	-42
b have	61
b he	-106
b he'll	-32
b he's	-158
b head	57
b header	39
b header's	55
b headroom's	52
b hearth	25
b heat	38
b heater's	39
b heavy	-15
b held	37
b her	-45
b here	-61
b hes	-67
b high	25
b highway	-22
b him	-78
b hinge	32
b hinges	-41
b his	-94
b hit	-33
b hits	30
b hold	-59
b hole's	50
b holes	23
b holiday	-24
b home	-55
b homeruns	-30
b hood	30
b hooks	33
b horse	-16
b hot	-18
b hour	-59
b hours	-59
b how	24
b humidity	76
b humidity's	39
b hundred	30
b hung	69
b hvac	19
b hwy	-74
b i'd	37
b i'll	-23
b i've	25
b if	21
b im	-32
b in	-25
b inch	34
b inches	15
b inside	54
b inspector	-42
b install	-35
b instead	22
b insulation	-33
b into	21
b inv	-61
b invoice	-44
b island	36
b it	28
b it'll	29
b item	-44
b items	-54
b its	16
b itself	-20
b jan	27
b job	-52
b joists	51
b jumper	-74
b just	99
b k	-41
b keep	61
b key	-61
b keyed	-50
b keynote	-26
b kick	39
b kicks	89
b kid	-52
b kid's	-25
b kids	65
b kind	45
b kit	18
b kitchen	63
b kits	39
b knee	-16
b knock	-30
b l	26
b l1	27
b l2	16
b label	24
b ladder	-16
b lags	21
b laid	56
b landing	35
b lands	-27
b lane	-25
b lap	85
b last	32
b lb	44
b least	72
b leave	61
b leaves	74
b led	28
b left	50
b leg	82
b lengths	27
b less	28
b let	71
b level	-87
b light's	-17
b lights	49
b lime	34
b limit's	27
b line	-30
b linen	15
b little	-37
b live	22
b living	-27
b load	24
b lobby	29
b local	-33
b lock	20
b lockbox	-25
b log	-21
b longer	-27
b look	-34
b loop	-37
b lot	-108
b lounge	73
b low	33
b lumber	-18
b lunch	-33
b lvl	-36
b m	-55
b made	-54
b make	54
b man	-36
b marble	38
b margin's	-18
b mark	-52
b marked	-43
b marker	-15
b materials	-76
b max	40
b maximum	42
b maybe	27
b mc	31
b measure	-32
b medallion	19
b medium	63
b meeting	-58
b meter	81
b metered	38
b metres	37
b mike	-25
b mil	16
b mile	-22
b millimeter	19
b million	-42
b mine	-27
b minus	22
b minutes	48
b mirror	26
b mirror's	41
b missing	47
b mix	46
b mm	34
b mode	-49
b moisture	101
b moisture's	46
b mold	26
b mon	-57
b moon	-40
b more	33
b morning	20
b mounted	20
b move	41
b moved	-46
b mrs	-41
b ms	-48
b mud	-29
b must	27
b my	-85
b myself	-21
b nail	25
b nailed	34
b nails	54
b near	-27
b need	105
b needs	105
b net	-47
b never	32
b new	-26
b nfpa	-15
b nineteen	-27
b no	60
b nobody	-18
b none	34
b north	43
b not	26
b note	-34
b nothing	44
b now	61
b number	-186
b number's	-67
b nursery	15
b nuts	21
b o	42
b oak	24
b odds	-35
b of	45
b office	-25
b offset	28
b oh	-44
b ohms	53
b oil	-47
b okay	-72
b old	-78
b one's	-15
b only	82
b open	19
b opened	17
b opening	37
b opening's	50
b opens	-46
b option	-19
b or	-24
b order	35
b ordered	74
b other	-19
b oughta	24
b our	-53
b outlet	-20
b outside	24
b oven	33
b over	32
b owes	-18
b owner	-21
b p	-42
b pack	-52
b packed	37
b packs	65
b pad	42
b page	-50
b paid	-39
b paint	-22
b painted	-52
b panel's	26
b paper	-51
b par	-45
b parked	-22
b part	-55
b passed	-29
b patch	36
b pavers	24
b pay	-36
b pcs	-36
b permit	-23
b pete	-27
b phase	-44
b photo	-19
b pick	64
b pickets	107
b picture	-16
b pieces	46
b pier	-47
b pin	-77
b pinned	18
b pipe	56
b pitch	30
b place	-45
b plans	58
b plant	53
b plaster	61
b plastic	-25
b plates	32
b play	-29
b please	65
b plot	-43
b plug	21
b plumb	20
b plus	55
b po	-39
b point	43
b pole	-45
b poly	-29
b popped	-40
b port	-23
b pounds	28
b pour	-34
b poured	34
b premium	-18
b press	-22
b pressure	25
b prob	-30
b psalm	-44
b psi	41
b pu	20
b pull	20
b pulled	-59
b pulling	51
b pumped	64
b put	72
b putty	17
b pvc	15
b qt	23
b qty	56
b quarter	-22
b quiet	-22
b quoted	-51
b r	-53
b rack	-66
b rafters	59
b rail	23
b rail's	18
b rain	22
b raise	52
b ramp	17
b ran	39
b range	43
b rapid	-36
b rate's	-25
b rated	46
b ratio's	59
b ray	-18
b rcbo	25
b re	-41
b reach	-20
b read	62
b reading	58
b reads	87
b ready	-16
b real	22
b rebuilt	22
b receptacles	18
b recoat	75
b red	-21
b ref	-20
b register's	41
b relay	-16
b relief	58
b rental	-57
b rep	30
b replace	79
b replaced	21
b report	-59
b return	66
b return's	38
b reveal's	18
b rfi	-24
b rh	42
b right	-50
b rip	31
b ripped	22
b rise	55
b riser	-30
b rm	-75
b rock	37
b rod	23
b rolled	-54
b rolls	-35
b roof	-25
b rooftop	-17
b room	-40
b rough	18
b roughed	34
b round	-29
b route	-20
b row	-56
b rtu	-78
b rubber	-26
b rule	23
b run	50
b running	19
b sags	40
b same	-40
b sand	-29
b saturday	-26
b saves	-35
b saw	-34
b say	33
b saying	47
b scale	-68
b sch	-66
b sconces	17
b screen	18
b screwed	37
b screws	54
b seal	-35
b sealed	-49
b season	-18
b seat	35
b sec	-47
b section	-44
b see	-20
b send	-50
b sent	63
b serial's	-26
b served	-39
b set	112
b sets	-36
b setting	-27
b seventeen	16
b seventy	74
b she	-61
b she'll	-68
b she's	-86
b sheathing	16
b shed	-41
b sheet	-42
b sheet's	16
b sheets	19
b shelf	23
b shelves	43
b shelving	-54
b shift	-24
b shoe	23
b short	139
b shorted	83
b should	78
b should've	74
b shoved	-16
b shower	-17
b shows	49
b side	46
b side's	36
b sill	60
b sill's	41
b since	-87
b sister	64
b sit	51
b site	-50
b six	55
b sixteen	36
b sixty	58
b slab	48
b slab's	63
b slake	54
b slate	-22
b slept	-53
b slope	-19
b slump	86
b smoke	15
b smoko	-29
b snag	-22
b snapped	-18
b snow	31
b so	32
b soak	33
b sockets	20
b sold	43
b solid	-15
b some	25
b somebody	65
b something	-37
b sometime	-68
b somewhere	92
b song	-18
b sorry	33
b south	17
b space	19
b spaced	38
b spacing	66
b span's	17
b spare	37
b spec	91
b spent	28
b spot	-30
b spring's	-32
b spurs	-37
b sq	23
b square	26
b squares	27
b squeak	33
b stack	18
b stage	-41
b stainless	29
b stair	-66
b stairs	-18
b standing	32
b start	-44
b starts	-19
b stat	31
b state	-23
b static	49
b static's	37
b station	-21
b stay	35
b stays	25
b step	-19
b step's	70
b still	18
b stitch	-35
b stock	33
b stone	50
b stops	28
b strips	39
b stub	49
b stuck	28
b studio	-32
b studs	72
b stuff	61
b style	19
b sub	-29
b subcool	36
b subcool's	27
b subfloor	60
b subfloor's	21
b suite	-29
b summer	-38
b superheat	44
b superheat's	44
b supplier	16
b supply	49
b swap	67
b swapped	22
b sweet	-31
b swing	-20
b table	-97
b tag	-52
b tank	-20
b tap	47
b tape	42
b tel	-24
b temp	87
b ten	-33
b tenant	-44
b terms	-66
b test	48
b tested	71
b th	-48
b than	51
b that	-30
b that's	-37
b the	-18
b their	-27
b them	26
b then	-39
b there	-21
b thermostat	47
b thermostat's	54
b they'll	-16
b they're	-63
b they've	-39
b thick	52
b thin	63
b think	-23
b thinks	-38
b thinset	60
b thirteen	75
b thirty	22
b this	-67
b though	44
b three	31
b threshold	-18
b threw	17
b throw	50
b throwing	-36
b thurs	-26
b thursday	-18
b ticket	-25
b tied	28
b ties	55
b tight	24
b tightened	15
b til	-33
b tile	52
b tiles	36
b till	-20
b time	-51
b times	-42
b to	41
b toast	34
b toilet	61
b told	17
b tomorrow	-47
b top	-21
b torque	48
b torqued	33
b total	51
b touch	18
b town	17
b tracking	-44
b traffic	-28
b trailer	-62
b trap	34
b tread	-45
b treads	47
b trim	60
b trimmed	43
b tripped	-38
b truck	25
b truck's	-89
b tube	17
b tubes	26
b turned	-60
b twelve	50
b twenty	60
b two	31
b txt	-35
b type	-74
b u	-73
b under	18
b unit	-94
b united	-20
b units	-32
b uppers	26
b upstairs	54
b use	25
b used	113
b v	-20
b valve	85
b van	64
b vanity	74
b vent	55
b version	-22
b vikings	-80
b volt	-17
b volts	57
b w	16
b wait	33
b waited	-88
b waiting	27
b walk	-29
b wall	76
b wall's	58
b wallpaper	-36
b walnut	-49
b want	53
b wanted	53
b wants	77
b wardrobe	-56
b was	16
b washer	15
b waste	26
b water	17
b water's	54
b way	-52
b we	29
b we've	42
b wednesday	-35
b week	-68
b wet	70
b what	-21
b what's	-20
b when	18
b which	20
b white	43
b whole	-26
b wide	56
b width	49
b window	-58
b windows	24
b wire	32
b wire's	54
b with	22
b wo	-26
b won't	42
b wood's	41
b work	-29
b worked	-34
b working	-17
b works	-27
b worn	15
b would	19
b wrong	-18
b x	62
b yard	-48
b yeah	-16
b year	-30
b you	-32
b your	-48
b zero	-77
b zone	-92
bare 1	-51
bare 2	60
bare 3	17
claims 1	17
claims 2	-35
form 0figures 2	-19
form 0figures 4	-59
form figures 2	34
form figures 4	-53
form figures 5	-53
form oh	-41
form parts	59
form swallowed	-23
form swallowed round	-30
head 0	28
head 1	94
head 2	22
head 3	50
head none	-24
l of body	-19
l of cars	-51
l of clock	-66
l of kin	-25
l of media	22
l of money	-57
l of papers	-42
l of past	29
l of phones	-67
l of roads	-102
l of school	-51
l of services	-27
l of sport	-28
l1 	33
l1 
	-126
l1 #	-24
l1 \$	-115
l1 (	24
l1 +	65
l1 ,	44
l1 -	-53
l1 .	21
l1 /	22
l1 1	-17
l1 3	-21
l1 555	-19
l1 :	77
l1 <	18
l1 above	24
l1 add	76
l1 addendum	-15
l1 adds	34
l1 aisle	-50
l1 all	68
l1 allow	43
l1 an	-80
l1 and	76
l1 another	-37
l1 apartment	-35
l1 apt	-41
l1 are	31
l1 around	-25
l1 at	36
l1 bath	-88
l1 bay	-109
l1 be	65
l1 bed	-70
l1 bedroom	-93
l1 before	-32
l1 better	17
l1 between	-26
l1 big	-33
l1 bldg	-50
l1 bottom	-52
l1 bought	88
l1 bout	43
l1 box	-15
l1 bracket	35
l1 breaker	-68
l1 bring	114
l1 broke	-17
l1 building	-39
l1 but	29
l1 buy	109
l1 by	46
l1 cat	-24
l1 catch	-16
l1 ceiling	-21
l1 ch	-63
l1 change	29
l1 channel	-42
l1 chapter	-24
l1 circuit	-85
l1 class	-17
l1 closet	43
l1 cloud	-16
l1 coat	-40
l1 code	-78
l1 code's	-58
l1 counted	39
l1 counter	-29
l1 cracked	21
l1 cure	24
l1 cut	85
l1 d	-19
l1 dash	-23
l1 day	-115
l1 detail	-23
l1 dock	-27
l1 doing	-29
l1 done	28
l1 door	-78
l1 double	-33
l1 down	15
l1 drawer	-34
l1 drove	23
l1 dry	49
l1 e	-23
l1 each	-49
l1 edge	38
l1 eight	-15
l1 elevator	-25
l1 eleven	-15
l1 em	15
l1 error	-47
l1 every	-33
l1 exit	-55
l1 extension	-16
l1 exterior	-22
l1 f	-30
l1 fall's	15
l1 fan	52
l1 first	-27
l1 five	-40
l1 flat	-42
l1 floor	-53
l1 for	28
l1 formula	-35
l1 found	73
l1 four	-40
l1 fourteen	-34
l1 framed	38
l1 fresh	-22
l1 from	-39
l1 front	33
l1 full	48
l1 gap	19
l1 garage	72
l1 get	143
l1 gets	62
l1 getting	27
l1 gimme	48
l1 go	51
l1 going	43
l1 good	-34
l1 got	94
l1 grab	91
l1 grade	-29
l1 had	42
l1 hall	59
l1 has	102
l1 have	75
l1 he's	-89
l1 header's	25
l1 her	-33
l1 here	-15
l1 highway	-16
l1 hole	-47
l1 hole's	50
l1 humidity's	32
l1 hung	49
l1 in	-58
l1 inch	62
l1 inside	33
l1 install	-27
l1 invoice	-39
l1 is	58
l1 it	94
l1 item	-44
l1 its	15
l1 job	-39
l1 just	82
l1 k	-18
l1 key	-68
l1 keynote	-26
l1 kitchen	44
l1 laid	53
l1 lane	-25
l1 last	17
l1 least	72
l1 leaves	64
l1 left	38
l1 level	-62
l1 lift	-19
l1 limit's	27
l1 line	-51
l1 local	-33
l1 longer	-27
l1 loop	-44
l1 lot	-103
l1 lvl	-44
l1 m	-52
l1 mark	-55
l1 marker	-15
l1 maybe	72
l1 me	24
l1 measure	-42
l1 measured	22
l1 measures	27
l1 minus	23
l1 mix	48
l1 mode	-49
l1 moisture	36
l1 nd	-41
l1 need	133
l1 needs	90
l1 net	-55
l1 new	-81
l1 nine	-21
l1 nineteen	-26
l1 not	56
l1 note	-34
l1 now	55
l1 number	-196
l1 number's	-66
l1 of	-41
l1 off	-26
l1 oh	-32
l1 old	-85
l1 on	-19
l1 one	-65
l1 ones	33
l1 only	77
l1 open	-22
l1 opened	-30
l1 opening's	28
l1 or	-38
l1 ordered	42
l1 ought	-34
l1 out	86
l1 over	18
l1 p	-49
l1 page	-40
l1 paid	-26
l1 panel	-19
l1 panel's	26
l1 par	-23
l1 phase	-21
l1 pin	-23
l1 plant	53
l1 plate	46
l1 plot	-43
l1 plus	63
l1 po	-19
l1 point	15
l1 port	-25
l1 poured	27
l1 press	-22
l1 pressure's	-31
l1 psalm	-44
l1 pull	46
l1 pulling	49
l1 put	54
l1 quarter	51
l1 quoted	-40
l1 r	-65
l1 rack	-30
l1 rail's	18
l1 ran	62
l1 rate's	-25
l1 rated	40
l1 read	70
l1 reading	50
l1 reads	69
l1 red	41
l1 replaced	50
l1 returned	23
l1 rev	-28
l1 rfi	-24
l1 rh	34
l1 right	-44
l1 rise	36
l1 riser	-20
l1 rm	-92
l1 road	-25
l1 room	-64
l1 row	-27
l1 rtu	-18
l1 run	51
l1 running	32
l1 said	22
l1 saves	-35
l1 say	50
l1 saying	48
l1 says	34
l1 season	-18
l1 second	-38
l1 section	-43
l1 see	55
l1 sent	39
l1 set	79
l1 she's	-38
l1 sheet	-51
l1 shelf	-34
l1 short	102
l1 shower	-28
l1 shows	29
l1 side	33
l1 side's	31
l1 since	-40
l1 sit	16
l1 six	16
l1 sixty	-15
l1 slab	15
l1 so	106
l1 solid	-26
l1 spacing	29
l1 span's	17
l1 spec	25
l1 spurs	-37
l1 square	-42
l1 stage	-41
l1 stair	-43
l1 static's	17
l1 station	-21
l1 step	-52
l1 still	68
l1 strike	-42
l1 suite	-28
l1 superheat	34
l1 supply	16
l1 sweet	-31
l1 switch	-53
l1 t	17
l1 table	-35
l1 take	30
l1 takes	-33
l1 temp	33
l1 ten	-30
l1 than	46
l1 that	-85
l1 the	-91
l1 then	-44
l1 there	-30
l1 there's	17
l1 theres	22
l1 they're	-22
l1 thing	-34
l1 thinset	61
l1 this	-36
l1 through	18
l1 til	-27
l1 till	-31
l1 times	19
l1 to	74
l1 tomorrow	22
l1 took	65
l1 traffic	-28
l1 trailer	-17
l1 tread	-38
l1 treads	41
l1 truck	-47
l1 turned	-38
l1 twelve	-35
l1 twenty	-16
l1 two	45
l1 type	-62
l1 under	67
l1 unit	-133
l1 up	44
l1 uppers	17
l1 us	31
l1 use	40
l1 used	110
l1 vanity	33
l1 version	-22
l1 wait	19
l1 wall	65
l1 wall's	38
l1 want	71
l1 wanted	39
l1 wants	97
l1 was	61
l1 we're	58
l1 well	36
l1 went	-53
l1 what	-36
l1 wide	17
l1 wire's	23
l1 with	16
l1 wo	-26
l1 x	89
l1 you	-24
l1 your	-44
l1 zone	-90
l1 £	-53
l1. #	28
l1. \$	-115
l1. 's	97
l1. (	24
l1. +	65
l1. ,	44
l1. -	-53
l1. -ed	50
l1. -ing	41
l1. -ly	55
l1. -s	56
l1. .	21
l1. /	-105
l1. 1	-67
l1. :	77
l1. <	18
l1. Name	-112
l1. letter	-41
l1. one	-108
l1. unit	-42
l1. £	-53
l2 	-17
l2 
	31
l2 %	-26
l2 '	65
l2 (	53
l2 )	-27
l2 ,	29
l2 1	-76
l2 10	32
l2 118	-25
l2 18	17
l2 3	-35
l2 31	-57
l2 34	26
l2 4	16
l2 400	-26
l2 555	-29
l2 6	-41
l2 60	19
l2 600	39
l2 68	33
l2 7	-18
l2 8	-24
l2 9	26
l2 :	-18
l2 a	-143
l2 address	-26
l2 allow	41
l2 alright	-17
l2 amps	23
l2 an	-48
l2 anything	32
l2 asked	36
l2 at	-116
l2 b	-20
l2 back	-40
l2 bags	21
l2 bar	19
l2 base	31
l2 basement	41
l2 be	41
l2 bedroom	35
l2 bench	46
l2 billed	-51
l2 block	36
l2 book	24
l2 booked	-16
l2 bottom	33
l2 box	37
l2 boxes	63
l2 breaker's	41
l2 bring	25
l2 broke	78
l2 built	-21
l2 burned	47
l2 but	-35
l2 by	-70
l2 call	81
l2 calls	41
l2 came	20
l2 cap	39
l2 change	-69
l2 changed	30
l2 charge	-25
l2 charged	-58
l2 chimney	-37
l2 clamps	27
l2 class	-18
l2 clips	-19
l2 closer	43
l2 closes	-36
l2 closet	-20
l2 code	80
l2 column	-28
l2 comes	17
l2 coming	-36
l2 corner	28
l2 cost	-15
l2 could	21
l2 county	-23
l2 cracked	16
l2 cure	25
l2 cut	72
l2 deep	24
l2 dip	-26
l2 dog	-31
l2 don't	-85
l2 done	38
l2 double	-24
l2 dropped	20
l2 dryer	-30
l2 edge	16
l2 eight	25
l2 eighths	17
l2 elbows	16
l2 em	46
l2 epoxy	-43
l2 except	-21
l2 extension	-17
l2 fan	-29
l2 fault	-23
l2 feet	-18
l2 fifty	-23
l2 finish	20
l2 first	39
l2 fitted	21
l2 five	21
l2 floor's	18
l2 flue	47
l2 foot	46
l2 footers	18
l2 for	-61
l2 forms	40
l2 forty	-46
l2 four	68
l2 fourteen	-15
l2 fourth	-49
l2 friday	-42
l2 from	-58
l2 ft	40
l2 full	-50
l2 g	-32
l2 gate	-22
l2 gauge	16
l2 gave	38
l2 get	-34
l2 give	-35
l2 glass	38
l2 go	-16
l2 gotta	60
l2 grab	-21
l2 grid	15
l2 grout	18
l2 guy	53
l2 had	-31
l2 half	-24
l2 hammer	17
l2 hand	21
l2 handrail	17
l2 hardware	-52
l2 have	36
l2 he	-48
l2 he's	-33
l2 head	69
l2 header	38
l2 header's	24
l2 heads	-23
l2 heat	41
l2 heater	40
l2 held	33
l2 her	-49
l2 here	-43
l2 hes	-19
l2 high	18
l2 hinges	-35
l2 his	-32
l2 hold	-70
l2 hole	24
l2 hot	-17
l2 hours	-40
l2 house	-18
l2 humidity	49
l2 hundred	29
l2 hung	17
l2 i	92
l2 i'd	53
l2 i'll	36
l2 in	-52
l2 inch	17
l2 inches	40
l2 inside	32
l2 instead	59
l2 is	-27
l2 it	21
l2 it'll	49
l2 joists	31
l2 kid	-54
l2 kit	31
l2 kitchen	-36
l2 left	47
l2 leg	67
l2 lengths	36
l2 level	-28
l2 lock	23
l2 long	25
l2 loose	53
l2 low	59
l2 lunch	-32
l2 m	20
l2 make	84
l2 maybe	-45
l2 me	-25
l2 meter	53
l2 mil	-58
l2 mile	-20
l2 million	-40
l2 minute	-33
l2 minutes	54
l2 missing	58
l2 mm	51
l2 monday	30
l2 more	40
l2 morning	33
l2 mud	-20
l2 my	-22
l2 nails	16
l2 nineteen	-38
l2 no	-108
l2 north	23
l2 not	-41
l2 number	-29
l2 of	-61
l2 of body	-24
l2 of cars	-60
l2 of clock	-44
l2 of food	-42
l2 of kin	-55
l2 of money	-74
l2 of past	-18
l2 of roads	42
l2 of school	-61
l2 of services	-32
l2 off	-43
l2 office	-17
l2 offset	28
l2 oh	-42
l2 ohms	24
l2 ok	-28
l2 okay	-25
l2 on	-34
l2 one	-20
l2 only	72
l2 opening	21
l2 or	17
l2 out	-45
l2 outlets	21
l2 over	18
l2 owes	-18
l2 pack	-20
l2 paint	-17
l2 panel	-21
l2 passed	-24
l2 pay	-22
l2 per	-20
l2 pick	81
l2 picked	39
l2 pickets	92
l2 piece	16
l2 pipe	47
l2 plan	26
l2 plaster	25
l2 plate	-26
l2 play	-23
l2 posts	22
l2 pressure's	41
l2 primer	18
l2 pumped	19
l2 put	64
l2 quarter	-47
l2 quoted	-16
l2 r	-54
l2 rail	40
l2 raise	45
l2 ran	-37
l2 real	35
l2 recoat	75
l2 red	-65
l2 right	28
l2 room	-33
l2 rough	25
l2 round	-41
l2 rtu	-50
l2 sand	-25
l2 sanded	-37
l2 says	20
l2 scale	-24
l2 screws	61
l2 see	-35
l2 set	52
l2 sets	-52
l2 seven	-18
l2 seventy	43
l2 she	-43
l2 she'll	-49
l2 she's	-27
l2 sheets	-27
l2 shelf	38
l2 shim	33
l2 short	62
l2 shorted	76
l2 shot	23
l2 should	57
l2 side	-20
l2 sill	52
l2 six	-25
l2 sixteen	21
l2 smoko	-16
l2 so	24
l2 soak	33
l2 sockets	20
l2 sometime	-38
l2 somewhere	70
l2 space	19
l2 spec	70
l2 split	16
l2 stair	-33
l2 stairs	-37
l2 start	27
l2 stay	31
l2 step	16
l2 sticks	27
l2 still	-17
l2 studs	51
l2 sub	-29
l2 subfloor	27
l2 subfloor's	16
l2 swap	29
l2 switch	26
l2 table	-46
l2 take	-29
l2 tape	31
l2 temp	20
l2 ten	-35
l2 tested	71
l2 that	66
l2 that's	-28
l2 the	-87
l2 them	26
l2 there	-29
l2 there's	33
l2 thermostat	16
l2 thermostat's	45
l2 they're	-17
l2 thin	26
l2 thirty	-16
l2 this	-20
l2 three	43
l2 through	-19
l2 thursday	-61
l2 to	-31
l2 toast	30
l2 toilet	19
l2 tomorrow	-52
l2 torqued	33
l2 trap	41
l2 twenty	32
l2 two	-41
l2 type	-47
l2 u	-34
l2 under	-24
l2 unit	-23
l2 vanity	51
l2 wall	39
l2 walls	-32
l2 wants	-21
l2 was	-103
l2 washer	37
l2 water	34
l2 we	42
l2 we've	28
l2 went	41
l2 were	30
l2 which	45
l2 white	16
l2 width	50
l2 will	32
l2 window	-47
l2 windows	19
l2 wood	25
l2 zero	-59
l2. #	-17
l2. %	-26
l2. '	65
l2. (	53
l2. )	-27
l2. ,	29
l2. -ed	32
l2. -ing	-21
l2. -ly	-31
l2. -s	66
l2. /	35
l2. :	-18
l2. Name	-42
l2. letter	29
l2. n't	-68
l2. one	-48
l2. unit	21
l3 #	-17
l3 (	21
l3 ,	27
l3 -	-16
l3 /	21
l3 1	-43
l3 1.5	40
l3 10	-60
l3 12	32
l3 15	25
l3 16	-29
l3 2	29
l3 24	30
l3 3	24
l3 450	-17
l3 5	-52
l3 6	24
l3 7	-37
l3 8	29
l3 9	-35
l3 ;	22
l3 a	37
l3 after	38
l3 all	-39
l3 also	-18
l3 am	-32
l3 amp	24
l3 amps	53
l3 an	59
l3 apart	42
l3 apiece	32
l3 as	16
l3 at	-66
l3 b	-26
l3 base	22
l3 basement	-26
l3 bath	67
l3 bay	91
l3 be	-32
l3 before	21
l3 between	-65
l3 boards	19
l3 book	-25
l3 boss	-16
l3 both	-31
l3 bought	-18
l3 boxes	-38
l3 broke	15
l3 busted	-37
l3 but	-40
l3 by	25
l3 c	-18
l3 call	-45
l3 came	80
l3 can't	19
l3 capped	24
l3 change	42
l3 changed	39
l3 channel	-50
l3 circuit	38
l3 cleaned	40
l3 clear	34
l3 clips	29
l3 code	-26
l3 comes	-22
l3 crack	16
l3 cracked	40
l3 crane's	-27
l3 cut	54
l3 down	16
l3 dryer	27
l3 each	86
l3 eight	35
l3 eighty	-52
l3 ends	-20
l3 every	20
l3 except	-18
l3 extension	22
l3 failed	-15
l3 fence	24
l3 five	16
l3 flat	-24
l3 footers	20
l3 footy's	-18
l3 for	19
l3 four	-18
l3 fridge	23
l3 gap	32
l3 get	-70
l3 give	41
l3 goal	-37
l3 goes	41
l3 going	-48
l3 gone	34
l3 gotta	61
l3 grab	28
l3 gray	-29
l3 guy	-24
l3 hardware	-18
l3 have	-18
l3 he	-51
l3 he's	-35
l3 heads	41
l3 her	-17
l3 here	18
l3 hes	-46
l3 him	-35
l3 hinge	21
l3 his	-25
l3 hit	-18
l3 hole	22
l3 hood	20
l3 hour	-29
l3 hours	-28
l3 house	20
l3 hundred	-27
l3 hung	33
l3 i'd	36
l3 i'm	28
l3 i've	31
l3 if	67
l3 in	-25
l3 inch	35
l3 inside	-18
l3 is	-34
l3 island	17
l3 it's	-18
l3 its	-30
l3 jumper	-49
l3 keep	29
l3 key	-25
l3 kicks	50
l3 knock	-30
l3 lady	-20
l3 laid	17
l3 last	-37
l3 left	-17
l3 leg	54
l3 let	36
l3 line	-16
l3 made	-48
l3 me	15
l3 meter	22
l3 mirror's	33
l3 mm	-26
l3 more	39
l3 move	40
l3 ms	-48
l3 must	47
l3 my	-56
l3 nailed	16
l3 need	-24
l3 needs	21
l3 new	25
l3 next	-26
l3 nine	24
l3 ninety	-29
l3 no	38
l3 nobody	-55
l3 nosing	-16
l3 nothing	34
l3 now	-22
l3 of	19
l3 oh	33
l3 ok	-21
l3 old	71
l3 one	-17
l3 one's	-26
l3 ones	-19
l3 only	-33
l3 open	33
l3 ordered	23
l3 ought	35
l3 out	-43
l3 outlets	-17
l3 owner	-30
l3 paper	-33
l3 pick	28
l3 ply	-22
l3 primer	16
l3 psi	26
l3 put	-64
l3 r	33
l3 rack	-39
l3 range	-18
l3 red	-18
l3 rental	-26
l3 rip	31
l3 room	32
l3 row	-33
l3 run	65
l3 s	33
l3 screws	16
l3 second	58
l3 see	-56
l3 seven	-23
l3 seventy	19
l3 she	-25
l3 shelves	29
l3 side	40
l3 since	-24
l3 slab	19
l3 solid	16
l3 somebody	48
l3 spacing	27
l3 stairs	23
l3 start	-44
l3 still	-45
l3 strip	38
l3 stuck	-25
l3 supply	17
l3 switch	-25
l3 tap	26
l3 tape	-27
l3 temp	43
l3 ten	-37
l3 test	29
l3 th	-27
l3 that's	-17
l3 the	44
l3 their	-18
l3 them	30
l3 there	46
l3 they	-40
l3 they're	-29
l3 thick	67
l3 thinks	-38
l3 thirteen	51
l3 thirty	29
l3 this	15
l3 three	-29
l3 thurs	-19
l3 thursday	30
l3 tile	39
l3 till	27
l3 times	-45
l3 tomorrow	37
l3 too	43
l3 torque	48
l3 truck	34
l3 tube	17
l3 twelve	35
l3 twice	27
l3 two	-22
l3 u	-39
l3 under	21
l3 unit	37
l3 up	-23
l3 upstairs	32
l3 us	-35
l3 valve	18
l3 van	26
l3 vent	34
l3 walk	-19
l3 water	-18
l3 way	-24
l3 we	16
l3 we're	-15
l3 week	-41
l3 well	33
l3 were	28
l3 white	61
l3 wide	27
l3 won't	32
l3 wood	-32
l3 work	-15
l3 x	47
l3 yard	-37
l3 yet	18
l3 you	-57
l3. (	21
l3. ,	27
l3. -	-16
l3. -ed	-28
l3. -ing	31
l3. 1	-18
l3. ;	22
l3. Name	18
l3. letter	30
l3. n't	44
l3. unit	17
letter head 0	-45
letter head none	-23
long 10	-54
long 16	26
long 30	63
more figures 5	-42
more l. word	-51
more r 	-37
more r. #	-37
more r. word	-15
more words round	-24
of body	22
of cars	30
of food	-24
of kin	-56
of media	-50
of money	-66
of papers	-20
of past	-20
of phones	-58
of roads	-34
of services	34
of so many 0	50
of so many 1	-41
of so many 2	-16
of so many 3	-31
one head none	-114
r of body	-39
r of cars	23
r of clock	-51
r of food	-42
r of kin	-123
r of money	-185
r of phones	-24
r of school	-18
r of services	70
r of sport	-57
r1 )	-79
r1 ,	27
r1 -	-99
r1 10	28
r1 12	45
r1 2	63
r1 3	-26
r1 30	-17
r1 4	34
r1 5	25
r1 555	-22
r1 :	-136
r1 ;	30
r1 @	19
r1 a	-53
r1 aa	28
r1 about	-16
r1 above	24
r1 across	29
r1 adds	-47
r1 aff	18
r1 again	-40
r1 agree	-42
r1 along	28
r1 already	-42
r1 amigos	-44
r1 an	-59
r1 anchor	15
r1 anchors	42
r1 angry	-34
r1 apart	74
r1 are	23
r1 area	-33
r1 at	68
r1 b	-56
r1 back	71
r1 banksia	-28
r1 base	27
r1 bath	22
r1 baths	35
r1 batts	-36
r1 bays	-22
r1 bedroom	-49
r1 before	63
r1 below	22
r1 belt	-26
r1 between	46
r1 blades	40
r1 blank	20
r1 blinds	24
r1 block	25
r1 blocks	48
r1 board	45
r1 boards	59
r1 bolts	26
r1 bracket	45
r1 brackets	47
r1 brass	43
r1 brick	36
r1 broken	48
r1 bucks	-132
r1 building	-16
r1 bulbs	23
r1 business	-33
r1 by	65
r1 c	-33
r1 cabinet	34
r1 call	22
r1 came	18
r1 can	-34
r1 centers	32
r1 centres	35
r1 cents	-39
r1 chance	-38
r1 chipped	20
r1 clamps	22
r1 clear	63
r1 clips	40
r1 closed	58
r1 closets	38
r1 code	-18
r1 come	-29
r1 coming	57
r1 corner	56
r1 couplings	23
r1 cracked	55
r1 crew	-55
r1 cut	28
r1 dash	-18
r1 dead	32
r1 deep	81
r1 digits	-23
r1 does	-16
r1 doing	-59
r1 dollar	-55
r1 dollars	-60
r1 don't	66
r1 done	46
r1 doors	54
r1 double	41
r1 downstairs	17
r1 drip	55
r1 drops	44
r1 eight	-26
r1 elbows	42
r1 elsewhere	23
r1 euro	-98
r1 even	18
r1 every	-17
r1 extra	73
r1 fall	37
r1 fifty	-15
r1 filter	19
r1 fingers	-30
r1 five	-61
r1 flat	32
r1 floor	25
r1 footings	21
r1 for	21
r1 forty	-16
r1 four	-52
r1 fourteen	-19
r1 fourth	-19
r1 from	-19
r1 full	23
r1 gang	-82
r1 gasket	24
r1 get	-37
r1 gets	-53
r1 go	-71
r1 goes	-46
r1 good	38
r1 got	-26
r1 grille	-44
r1 guys	-83
r1 had	-29
r1 half	24
r1 hall	60
r1 hand	-41
r1 handle	-71
r1 hangers	41
r1 has	-88
r1 hasn't	-17
r1 have	40
r1 he'll	-39
r1 head	30
r1 heads	59
r1 heavy	22
r1 here	59
r1 high	84
r1 hinge	20
r1 hinges	62
r1 hit	-43
r1 hole	-97
r1 homeruns	-26
r1 hooks	50
r1 hot	21
r1 hundreds	-35
r1 hung	32
r1 i	38
r1 i've	-18
r1 if	-28
r1 in	33
r1 inch	17
r1 instead	41
r1 is	-135
r1 ish	-41
r1 it	-21
r1 it'll	-31
r1 joist	18
r1 just	52
r1 keys	-22
r1 kinds	-55
r1 knobs	27
r1 larch	-38
r1 last	-54
r1 late	-58
r1 layer	-74
r1 layers	37
r1 lead	28
r1 left	76
r1 leg	-20
r1 lights	44
r1 like	-21
r1 lives	-26
r1 long	50
r1 loose	40
r1 man	-34
r1 maple	-42
r1 max	41
r1 miles	-39
r1 missing	36
r1 moisture	27
r1 more	113
r1 moves	-15
r1 nail	43
r1 need	69
r1 needs	-56
r1 new	66
r1 next	-31
r1 nil	-34
r1 nine	18
r1 ninety	-34
r1 ninth	-27
r1 no	24
r1 nos	35
r1 not	37
r1 nothing	-48
r1 notice	-85
r1 number	21
r1 o'clock	-97
r1 oc	63
r1 oclock	-42
r1 off	84
r1 old	-58
r1 openings	24
r1 or	-17
r1 outlets	70
r1 outside	21
r1 outta	42
r1 panel	-112
r1 panels	22
r1 part	-55
r1 pascals	21
r1 pavers	49
r1 per	73
r1 pickets	21
r1 piers	26
r1 pipe	20
r1 plate	18
r1 please	22
r1 pm	-56
r1 pole	-65
r1 posts	16
r1 potato	-44
r1 pulls	48
r1 put	-34
r1 quarter	-38
r1 quid	-45
r1 r	-21
r1 rail	49
r1 reads	-39
r1 receps	26
r1 receptacles	41
r1 reducer	28
r1 risers	20
r1 rod	-18
r1 rolled	-23
r1 roof	-17
r1 rooms	20
r1 rough	17
r1 rubber	28
r1 running	39
r1 runs	63
r1 sash	-27
r1 says	-73
r1 sconces	37
r1 score	-20
r1 screens	51
r1 screw	23
r1 screws	72
r1 sec	-23
r1 second	-70
r1 series	-19
r1 shakes	-33
r1 sharp	-49
r1 shelves	19
r1 shift	-56
r1 shims	24
r1 short	38
r1 shot	-22
r1 should	48
r1 shows	-33
r1 side	-21
r1 sides	-24
r1 silicone	-24
r1 since	-26
r1 slake	39
r1 slope	24
r1 smoke	39
r1 so	55
r1 south	23
r1 spaces	33
r1 spare	41
r1 square	28
r1 stainless	19
r1 star	-18
r1 stars	-61
r1 starts	-16
r1 still	59
r1 stops	-44
r1 straps	35
r1 stripped	24
r1 studs	59
r1 supply	19
r1 sure	-41
r1 switch	48
r1 switches	29
r1 tall	23
r1 ten	48
r1 that	-20
r1 the	-50
r1 then	23
r1 there	-27
r1 there's	-16
r1 thick	63
r1 thing	-28
r1 things	-71
r1 thirty	29
r1 this	-27
r1 three	21
r1 tile	57
r1 tiles	44
r1 till	-21
r1 time	-18
r1 times	-150
r1 to	27
r1 toilet	46
r1 toilets	42
r1 tomorrow	-75
r1 tonight	30
r1 top	19
r1 total	40
r1 towel	25
r1 treads	91
r1 trees	29
r1 trim	23
r1 tripped	-39
r1 two	-62
r1 u	-18
r1 under	37
r1 used	30
r1 vanities	19
r1 walls	38
r1 wants	-35
r1 was	-69
r1 washers	24
r1 waste	32
r1 wax	26
r1 way	-79
r1 ways	-59
r1 wednesday	41
r1 week	-33
r1 weekend	-50
r1 were	25
r1 which	19
r1 while	25
r1 white	28
r1 wide	87
r1 will	30
r1 window	-57
r1 windows	62
r1 won't	28
r1 work	36
r1 wrongs	-50
r1 x	54
r1 you	32
r1. 's	50
r1. )	-79
r1. ,	27
r1. -	-99
r1. -ing	18
r1. -s	28
r1. 1	19
r1. :	-136
r1. ;	30
r1. @	19
r1. Name	-44
r1. letter	30
r1. n't	24
r1. one	-113
r1. unit	-17
r1. word	18
r2 
	16
r2 "	36
r2 (	-40
r2 *	-26
r2 +	19
r2 .	38
r2 /	-23
r2 00	-21
r2 0142	-27
r2 100	39
r2 12	86
r2 15	43
r2 16	27
r2 2	-42
r2 20	-30
r2 22	22
r2 28	33
r2 30	-24
r2 31	-15
r2 34	-30
r2 36	18
r2 40	22
r2 5	-32
r2 6	31
r2 7	-53
r2 8	51
r2 :	-78
r2 a	-24
r2 about	-35
r2 already	-31
r2 also	-48
r2 amp	22
r2 an	16
r2 and	31
r2 are	73
r2 ask	43
r2 at	-20
r2 b	-21
r2 back	-30
r2 bags	22
r2 bath	-45
r2 be	65
r2 bedroom	-42
r2 been	-19
r2 before	-32
r2 behind	16
r2 bent	41
r2 blind	-24
r2 boards	25
r2 bolt	15
r2 bolts	21
r2 bought	41
r2 box	-56
r2 boxes	49
r2 brackets	-16
r2 bring	29
r2 but	21
r2 buy	19
r2 by	-25
r2 c	-19
r2 call	-48
r2 cap	48
r2 caulk	50
r2 ceiling	-20
r2 center	67
r2 change	-54
r2 changed	16
r2 client	-42
r2 clips	19
r2 close	34
r2 coats	47
r2 code	71
r2 coming	-32
r2 concrete	-29
r2 covers	-29
r2 crack	-23
r2 cracked	93
r2 crown	-25
r2 cut	20
r2 day	-30
r2 days	-39
r2 deal	-31
r2 do	50
r2 don't	-39
r2 done	-40
r2 doors	-27
r2 down	-90
r2 each	74
r2 eighteen	-33
r2 eighty	-42
r2 elbow	-20
r2 em	104
r2 epoxy	-33
r2 every	27
r2 extra	-21
r2 far	56
r2 fifty	-27
r2 filter	17
r2 filters	32
r2 fine	47
r2 five	-69
r2 floor	-19
r2 footers	36
r2 for	36
r2 forty	20
r2 four	-26
r2 fourteen	39
r2 friday	35
r2 fridays	-29
r2 front	60
r2 full	19
r2 furnace	-48
r2 gal	16
r2 gallon	-18
r2 gang	-24
r2 glue	-33
r2 go	56
r2 got	41
r2 grade	39
r2 ground	-26
r2 grout	35
r2 half	30
r2 hang	60
r2 hangers	23
r2 he	-53
r2 he's	-20
r2 heads	20
r2 hinges	-46
r2 hole	-21
r2 hour	-59
r2 house	16
r2 hung	45
r2 i've	70
r2 if	-21
r2 inch	54
r2 inside	28
r2 joist	17
r2 latch	27
r2 laundry	-37
r2 leaking	24
r2 lift	-22
r2 lime	25
r2 lines	21
r2 ln	-19
r2 master	23
r2 mate	-37
r2 me	-42
r2 mirror	-17
r2 missing	42
r2 monday	-37
r2 morning	-16
r2 must	-25
r2 night	-64
r2 nine	-37
r2 nineteen	-19
r2 ninety	26
r2 no	-35
r2 noon	-38
r2 not	28
r2 nothing	-46
r2 nuts	46
r2 of	-26
r2 off	-17
r2 oh	-32
r2 ok	23
r2 old	20
r2 on	33
r2 one	-43
r2 ones	30
r2 open	37
r2 or	28
r2 order	-26
r2 outlets	35
r2 over	-25
r2 owner	-16
r2 paint	34
r2 panel	50
r2 paper	-37
r2 patch	25
r2 pick	-16
r2 plaster	26
r2 play	-54
r2 plus	24
r2 pop	-20
r2 pound	26
r2 primer	55
r2 pump	28
r2 put	34
r2 quarter	26
r2 rain	-73
r2 range	-39
r2 ring	56
r2 rolls	20
r2 room	-19
r2 run	-18
r2 s	-20
r2 same	26
r2 sand	19
r2 saturday	-40
r2 seal	24
r2 sent	16
r2 she	17
r2 she's	33
r2 sheets	-23
r2 shelf	26
r2 short	36
r2 should	-21
r2 showed	-39
r2 shower	-43
r2 shut	-26
r2 side	60
r2 signed	-42
r2 single	49
r2 site	70
r2 six	-31
r2 sixteen	25
r2 skip	-19
r2 slab	24
r2 so	-19
r2 sold	-20
r2 st	-31
r2 start	-25
r2 state	-35
r2 station	23
r2 still	-42
r2 stop	21
r2 sunday	-53
r2 swap	44
r2 ten	66
r2 tens	26
r2 that	-20
r2 that's	24
r2 the	57
r2 then	48
r2 there's	-29
r2 these	36
r2 they	-36
r2 they're	32
r2 thing	-60
r2 thirteen	28
r2 those	-38
r2 three	-44
r2 thursday	-42
r2 tiles	21
r2 today	35
r2 tomorrow	23
r2 top	-35
r2 trips	-22
r2 truck	18
r2 twelve	20
r2 twenty	24
r2 u	-22
r2 unit	-26
r2 upstairs	-31
r2 us	-73
r2 used	27
r2 want	46
r2 wants	-35
r2 was	36
r2 washer	28
r2 way	-34
r2 we	26
r2 we're	-26
r2 week	-34
r2 will	38
r2 window	-16
r2 windows	-20
r2 with	-42
r2 works	-38
r2 wrong	25
r2 x	50
r2 you're	55
r2 zero	-17
r2. "	36
r2. 's	-23
r2. (	-40
r2. *	-26
r2. +	19
r2. -ing	29
r2. .	38
r2. :	-78
r2. Name	-72
r2. letter	20
r2. n't	-39
r2. one	-47
r2. unit	66
r3 %	36
r3 '	-47
r3 12	25
r3 14	-52
r3 24	25
r3 28	-43
r3 3	30
r3 5	57
r3 6	-26
r3 8	34
r3 9	-17
r3 :	-65
r3 ;	-36
r3 a	-38
r3 about	31
r3 air	35
r3 and	48
r3 another	17
r3 app	-23
r3 back	-21
r3 bad	-70
r3 bag	-21
r3 bar	26
r3 base	-26
r3 bath	33
r3 before	-37
r3 behind	49
r3 black	66
r3 board	-39
r3 boards	42
r3 bottom	90
r3 box	34
r3 bracket	27
r3 brackets	-18
r3 breakers	21
r3 broken	22
r3 bulbs	19
r3 can	45
r3 caps	20
r3 case	29
r3 centre	27
r3 change	-19
r3 chipped	49
r3 clean	31
r3 close	-47
r3 closet	52
r3 coat	25
r3 color	-50
r3 coming	-20
r3 complaining	-20
r3 corner	34
r3 count	43
r3 counter	-16
r3 couplings	16
r3 cover	36
r3 cracked	-54
r3 crew	-75
r3 dead	33
r3 demo	44
r3 done	19
r3 door	52
r3 door's	28
r3 doors	29
r3 dot	-40
r3 down	34
r3 drain	24
r3 drawer	-26
r3 dry	23
r3 dryer	45
r3 dumpster	-26
r3 each	-24
r3 edge	50
r3 eight	-22
r3 either	-25
r3 eleven	-28
r3 every	-19
r3 falls	-37
r3 family	-16
r3 fault	-26
r3 feet	36
r3 field	37
r3 fifteen	25
r3 filler	-20
r3 fine	21
r3 first	-37
r3 fixed	-33
r3 flapper	-35
r3 flashing	50
r3 flat	30
r3 foot	18
r3 for	-46
r3 forty	19
r3 friday	39
r3 from	-29
r3 front	18
r3 furnace	-20
r3 gang	51
r3 gap	28
r3 gets	21
r3 glass	25
r3 go	22
r3 goes	15
r3 good	-40
r3 got	53
r3 gotta	21
r3 grab	-24
r3 grille	-36
r3 guy	-16
r3 guys	-40
r3 hall	31
r3 hangers	32
r3 he	-24
r3 he's	-74
r3 head	-19
r3 heads	-31
r3 her	23
r3 hinges	-31
r3 hot	23
r3 hour	15
r3 how	-62
r3 hung	18
r3 i'll	-23
r3 i'm	-22
r3 if	-33
r3 in	-43
r3 inch	-27
r3 is	-49
r3 island	-25
r3 it	38
r3 it's	35
r3 kitchen	43
r3 knocked	-22
r3 landing	41
r3 late	-17
r3 lazy	-31
r3 leave	30
r3 left	-37
r3 leg	73
r3 legs	15
r3 length	50
r3 lid	19
r3 lift	-44
r3 like	-39
r3 long	44
r3 lot	-33
r3 manual	-29
r3 mate	-28
r3 meter	20
r3 middle	68
r3 min	-31
r3 minute	-25
r3 minutes	-16
r3 missing	-46
r3 monday	-20
r3 more	-24
r3 morning	-39
r3 move	15
r3 nail	-36
r3 need	25
r3 neutral	35
r3 new	-32
r3 nine	-21
r3 no	-26
r3 nobody'll	-36
r3 nose	33
r3 not	20
r3 now	-17
r3 number	16
r3 off	-28
r3 old	-36
r3 once	-22
r3 one's	16
r3 order	29
r3 ought	25
r3 out	87
r3 outlets	-19
r3 paint	41
r3 panel	36
r3 panels	31
r3 parts	19
r3 pay	-17
r3 people	-21
r3 plate	24
r3 pm	32
r3 porch	49
r3 quarter	20
r3 radio	-47
r3 ran	52
r3 range	-27
r3 required	-17
r3 reset	-28
r3 return	-23
r3 right	-38
r3 roll	-35
r3 room	-31
r3 run	42
r3 s	26
r3 safe	50
r3 says	28
r3 screen	23
r3 screens	-29
r3 screw	-21
r3 second	-33
r3 set	20
r3 seven	-19
r3 seventh	-37
r3 seventy	62
r3 she's	24
r3 short	55
r3 sill	36
r3 sink	19
r3 sister	32
r3 sixteen	38
r3 sixty	30
r3 slope	30
r3 so	-25
r3 socket	16
r3 some	24
r3 steps	17
r3 still	-35
r3 stone	-33
r3 store	17
r3 straps	-25
r3 stripped	19
r3 stud	27
r3 studs	37
r3 sweep	15
r3 switch	31
r3 tag	-19
r3 take	46
r3 tape	49
r3 tell	21
r3 ten	-49
r3 tens	26
r3 thank	-19
r3 then	-19
r3 there	-42
r3 thermostat	-37
r3 this	-33
r3 those	29
r3 three	20
r3 through	-55
r3 thursday	20
r3 tile's	41
r3 today	-55
r3 together	-36
r3 told	-61
r3 too	24
r3 top	20
r3 towel	19
r3 tread	-51
r3 truck	-44
r3 tub	39
r3 tubes	22
r3 twelve	-28
r3 twenty	44
r3 two	-37
r3 under	-39
r3 up	-22
r3 upstairs	-19
r3 use	48
r3 van	25
r3 vent	-27
r3 wall	27
r3 want	15
r3 waste	30
r3 way	52
r3 we	52
r3 we're	17
r3 where	31
r3 white	-27
r3 wire's	41
r3 x	26
r3. %	36
r3. '	-47
r3. -ed	50
r3. -ing	-44
r3. -ly	-19
r3. 1	25
r3. :	-65
r3. ;	-36
r3. unit	32
r3. word	-21
rule 	-49
rule eachOf	85
rule pair	159
rule quantity/decimal	50
rule quantity/fraction	-31
rule quantity/mixed	62
rule quantity/whole+taken-back	42
rule range	34
size 0	-23
size 1	-25
size 20	16
size 60	17
size 99	18
size 9999	-46
size more	-63
unit head 0	-43
unit head 1	-43
unit head none	-21
units 0	-54
units 1	38
units 2	34
word head 0	-20
word head 2	18
word head 3	58
£ head none	-53
`;
