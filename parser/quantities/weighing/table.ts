/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 1	66
# head 2	35
\$ head none	-116
's head 0	-38
's head 1	-16
's head none	114
( head none	31
+ head 0	17
+ head 1	26
+ head none	29
, head 0	57
, head 1	28
, head none	30
- head 1	20
- head none	-70
-ed head 0	35
-ed head 1	30
-ed head none	27
-ing head 0	28
-ing head none	21
-ly head none	76
-s head 0	72
-s head 1	49
-s head 2	-22
-s head none	21
. head 0	40
. head 1	30
/ head none	-132
0 l 	-28
0 l. #	-28
0 l. 1	-28
0 l. word	17
0 r 	-36
0 r. #	-36
0 r. word	-20
1 figures 1	53
1 head 0	29
1 head none	-87
1 l 
	-23
1 l +	24
1 l ,	63
1 l -	19
1 l .	35
1 l and	60
1 l another	-98
1 l at	41
1 l back	-17
1 l bath	-53
1 l be	20
1 l bottom	-48
1 l bought	75
1 l bring	62
1 l but	-39
1 l buy	64
1 l by	50
1 l cut	-36
1 l each	-49
1 l every	-92
1 l for	23
1 l fresh	-22
1 l get	86
1 l good	-26
1 l got	80
1 l grab	44
1 l had	36
1 l hall	48
1 l have	31
1 l he's	-22
1 l in	-28
1 l inch	69
1 l is	-49
1 l just	68
1 l last	-98
1 l left	-48
1 l long	-19
1 l longer	-21
1 l me	55
1 l nd	-33
1 l need	57
1 l new	-105
1 l no	-34
1 l old	-76
1 l on	-16
1 l one	-18
1 l only	21
1 l order	48
1 l other	-112
1 l plus	53
1 l put	52
1 l reading	20
1 l red	47
1 l right	-39
1 l second	-44
1 l short	64
1 l so	24
1 l square	-49
1 l take	-30
1 l that	-118
1 l the	-168
1 l there's	45
1 l this	-46
1 l three	-16
1 l type	-27
1 l up	19
1 l wait	-37
1 l want	61
1 l wants	21
1 l was	35
1 l what	-24
1 l wrong	-21
1 l. +	24
1 l. ,	63
1 l. -	19
1 l. -ing	-56
1 l. -s	-27
1 l. .	35
1 l. /	-23
1 l. one	-23
1 l. unit	-28
1 l. word	-35
1 parts	68
1 r 	35
1 r 
	18
1 r )	-20
1 r -	-33
1 r .	-58
1 r 3	35
1 r :	-22
1 r and	-24
1 r at	-35
1 r b	17
1 r before	-51
1 r belt	-29
1 r bracket	38
1 r cracked	56
1 r door	21
1 r down	-24
1 r eight	19
1 r end	-30
1 r for	17
1 r from	-29
1 r gasket	23
1 r get	-26
1 r go	-17
1 r goes	-20
1 r hand	-41
1 r has	-39
1 r head	33
1 r here	20
1 r hit	-42
1 r i	-23
1 r is	-37
1 r kitchen	25
1 r leg	-36
1 r missing	31
1 r new	52
1 r nine	20
1 r of	-230
1 r off	71
1 r old	26
1 r out	-22
1 r over	-20
1 r panel	-68
1 r reads	-26
1 r reducer	29
1 r ring	38
1 r rod	-16
1 r sec	-23
1 r seven	16
1 r shelf	-36
1 r shot	-20
1 r side	-30
1 r so	-37
1 r spare	24
1 r the	18
1 r they	-22
1 r thing	-30
1 r time	-21
1 r to	-70
1 r towel	15
1 r two	-17
1 r up	19
1 r was	-30
1 r wax	19
1 r way	-32
1 r wednesday	41
1 r when	21
1 r white	19
1 r with	-22
1 r. #	35
1 r. )	-20
1 r. -	-33
1 r. -ing	44
1 r. -s	-87
1 r. .	-58
1 r. /	18
1 r. 1	94
1 r. :	-22
1 r. one	24
1 r. unit	15
1 r. word	-32
1 words	-63
12 0figures 2	-19
12 figures 1	-30
12 l 	34
12 l 
	-44
12 l :	54
12 l about	-30
12 l after	-47
12 l all	80
12 l and	26
12 l apartment	-26
12 l around	-33
12 l at	-133
12 l back	-21
12 l bay	-29
12 l before	-54
12 l between	-17
12 l bout	43
12 l box	-20
12 l breaker	-41
12 l buy	20
12 l by	30
12 l cat	-19
12 l ch	-24
12 l channel	-31
12 l circuit	-80
12 l cloud	-17
12 l counted	16
12 l cut	44
12 l detail	-24
12 l door	-56
12 l e	-22
12 l every	20
12 l exit	-27
12 l flat	-24
12 l floor	-44
12 l for	22
12 l four	-18
12 l garage	63
12 l get	21
12 l got	56
12 l grab	30
12 l have	16
12 l house	-50
12 l hung	52
12 l is	44
12 l it	64
12 l it's	-47
12 l its	-41
12 l keynote	-29
12 l last	36
12 l least	57
12 l leaves	47
12 l line	-36
12 l lot	-44
12 l maybe	29
12 l need	67
12 l needs	52
12 l no	-16
12 l not	22
12 l number	-100
12 l number's	-25
12 l of	20
12 l ought	-39
12 l out	33
12 l over	-18
12 l page	-18
12 l past	-52
12 l port	-29
12 l poured	28
12 l pulling	22
12 l ran	62
12 l reading	-47
12 l replaced	21
12 l riser	-56
12 l rm	-28
12 l road	-20
12 l run	60
12 l saves	-36
12 l sent	34
12 l set	-33
12 l sheet	-26
12 l so	29
12 l solid	-27
12 l step	-33
12 l table	-20
12 l take	45
12 l that's	-50
12 l the	41
12 l there's	18
12 l through	-33
12 l til	-29
12 l to	20
12 l took	26
12 l tread	-26
12 l truck	-23
12 l unit	-76
12 l up	57
12 l us	51
12 l used	32
12 l we're	44
12 l wire's	22
12 l x	44
12 l zone	-19
12 l. #	34
12 l. -ed	79
12 l. -ing	-20
12 l. /	-44
12 l. :	54
12 l. Name	-44
12 l. letter	-18
12 l. one	-34
12 parts	62
12 r 
	-26
12 r )	-33
12 r -	-17
12 r .	23
12 r 1	-23
12 r :	-51
12 r a	29
12 r anchors	38
12 r angry	-35
12 r at	39
12 r b	-39
12 r bad	-29
12 r boards	24
12 r bottom	21
12 r bucks	-25
12 r by	69
12 r come	-22
12 r dash	-16
12 r dead	37
12 r deep	53
12 r done	40
12 r door	-38
12 r doors	50
12 r down	32
12 r downstairs	19
12 r drops	39
12 r eight	-20
12 r elbows	22
12 r fifty	-21
12 r for	63
12 r four	-16
12 r from	-23
12 r gets	-32
12 r got	-23
12 r hangers	33
12 r heads	20
12 r here	35
12 r hinges	23
12 r hole	-53
12 r i	17
12 r in	-40
12 r instead	37
12 r is	-31
12 r it	-16
12 r last	-20
12 r left	64
12 r lives	-26
12 r long	-16
12 r more	49
12 r needs	-50
12 r no	-44
12 r notice	-52
12 r o'clock	-38
12 r of	66
12 r old	-31
12 r on	28
12 r openings	26
12 r or	-15
12 r out	-55
12 r outlets	19
12 r over	26
12 r panel	-41
12 r pulls	18
12 r rooms	19
12 r says	-21
12 r sharp	-37
12 r shift	-53
12 r short	46
12 r shows	-32
12 r so	32
12 r studs	51
12 r tiles	22
12 r till	-16
12 r times	-38
12 r tomorrow	-36
12 r total	17
12 r wants	-28
12 r was	-34
12 r waste	27
12 r we	-23
12 r when	-29
12 r work	35
12 r x	30
12 r. 's	57
12 r. )	-33
12 r. -	-17
12 r. -ed	42
12 r. -ing	22
12 r. -s	34
12 r. .	23
12 r. /	-26
12 r. :	-51
12 r. Name	-40
12 r. letter	-17
12 r. one	-84
12 words	25
12 words round	-27
2 l 	37
2 l 
	-37
2 l (	33
2 l +	26
2 l -	-30
2 l .	23
2 l about	22
2 l addendum	-15
2 l and	-33
2 l another	33
2 l at	-79
2 l back	42
2 l bath	-48
2 l bay	-55
2 l be	16
2 l bed	-26
2 l bedroom	-76
2 l bought	42
2 l bring	56
2 l buy	44
2 l by	26
2 l count	-22
2 l day	-67
2 l drawer	-33
2 l drove	-17
2 l flat	-35
2 l get	37
2 l gets	37
2 l got	-45
2 l have	42
2 l header's	23
2 l in	-36
2 l it	39
2 l it's	37
2 l maybe	59
2 l me	-36
2 l need	44
2 l number	-55
2 l of	-58
2 l one	-22
2 l other	28
2 l out	-16
2 l phase	-16
2 l press	-18
2 l ran	65
2 l says	-30
2 l so	37
2 l t	-30
2 l takes	-30
2 l the	74
2 l then	-38
2 l there's	-62
2 l took	27
2 l two	25
2 l type	-26
2 l unit	-17
2 l up	40
2 l us	-31
2 l use	25
2 l used	19
2 l wants	46
2 l with	30
2 l zone	-25
2 l. #	37
2 l. 's	73
2 l. (	33
2 l. +	26
2 l. -	-30
2 l. .	23
2 l. /	-37
2 l. 1	26
2 l. letter	-19
2 l. one	-25
2 l. unit	-60
2 parts	38
2 r ,	-18
2 r -	-30
2 r 3	-28
2 r :	-46
2 r a	-44
2 r and	-18
2 r at	83
2 r can	-50
2 r cents	-34
2 r clamps	16
2 r couplings	26
2 r doors	59
2 r eight	-32
2 r extra	17
2 r fall	32
2 r five	35
2 r for	17
2 r gang	-81
2 r guys	-61
2 r had	-26
2 r half	27
2 r high	30
2 r hinges	23
2 r in	51
2 r is	-32
2 r left	60
2 r man	-27
2 r more	64
2 r need	30
2 r new	27
2 r nil	-33
2 r nos	21
2 r o'clock	-28
2 r of	83
2 r one	-44
2 r out	43
2 r panel	-48
2 r part	-56
2 r pole	-70
2 r screws	28
2 r shakes	-39
2 r short	-15
2 r sides	-20
2 r slope	20
2 r starts	-16
2 r supply	20
2 r ten	21
2 r the	-55
2 r times	-33
2 r to	70
2 r twenty	18
2 r two	33
2 r we	-18
2 r window	-45
2 r windows	44
2 r wrongs	-49
2 r. 's	-20
2 r. ,	-18
2 r. -	-30
2 r. -ed	-28
2 r. -ing	-25
2 r. -ly	20
2 r. -s	18
2 r. :	-46
2 r. n't	34
2 r. one	62
20 figures 2	19
20 l ,	30
20 l .	-31
20 l a	47
20 l all	29
20 l and	27
20 l at	52
20 l circuit	-16
20 l code	-17
20 l counted	17
20 l every	58
20 l exit	-18
20 l for	-31
20 l got	56
20 l has	17
20 l house	-26
20 l in	-48
20 l is	69
20 l item	-28
20 l like	-20
20 l lot	-16
20 l maybe	25
20 l me	-27
20 l of	21
20 l on	-32
20 l out	23
20 l r	-64
20 l read	35
20 l reading	21
20 l reads	-20
20 l says	49
20 l set	56
20 l sheet	-21
20 l side	19
20 l so	30
20 l sweet	-34
20 l that's	-25
20 l the	-39
20 l two	22
20 l under	43
20 l used	28
20 l wants	-29
20 l. 's	16
20 l. ,	30
20 l. -ing	57
20 l. .	-31
20 l. letter	-54
20 l. unit	35
20 l. word	24
20 parts	17
20 r 	15
20 r .	49
20 r and	15
20 r at	29
20 r before	19
20 r bucks	-52
20 r by	40
20 r centers	36
20 r clips	26
20 r down	-71
20 r even	18
20 r for	-22
20 r hung	29
20 r i	40
20 r more	18
20 r ninety	-38
20 r ninth	-30
20 r oc	47
20 r of	20
20 r off	-29
20 r on	16
20 r risers	21
20 r second	-41
20 r to	29
20 r total	27
20 r treads	27
20 r twelve	-24
20 r twenty	-15
20 r two	-61
20 r we	26
20 r. #	15
20 r. 's	32
20 r. -s	45
20 r. .	49
20 r. Name	-18
20 r. one	-118
20 r. word	39
20 words round	-19
5 l 	39
5 l 
	-60
5 l ,	71
5 l .	20
5 l :	22
5 l a	-34
5 l about	-49
5 l after	-61
5 l and	26
5 l another	38
5 l apt	-32
5 l at	-92
5 l bay	-47
5 l be	46
5 l bed	-45
5 l bring	28
5 l by	-43
5 l code	-47
5 l cut	23
5 l day	-59
5 l dock	-27
5 l door	-39
5 l five	-20
5 l flat	-48
5 l for	34
5 l found	32
5 l get	52
5 l gets	21
5 l got	46
5 l has	43
5 l have	27
5 l hung	18
5 l in	54
5 l it	60
5 l it's	-27
5 l kitchen	39
5 l lane	-30
5 l last	30
5 l leaves	18
5 l left	41
5 l level	-36
5 l loop	-42
5 l lvl	-43
5 l me	35
5 l mode	-53
5 l need	44
5 l needs	16
5 l not	51
5 l number	-51
5 l of	-18
5 l on	-16
5 l only	55
5 l or	19
5 l order	-24
5 l other	83
5 l out	54
5 l over	86
5 l paid	-21
5 l par	-22
5 l put	29
5 l replaced	20
5 l rev	-21
5 l room	-67
5 l says	31
5 l shelf	-34
5 l short	40
5 l so	30
5 l strike	-22
5 l switch	-39
5 l that	40
5 l that's	24
5 l the	-41
5 l till	-38
5 l took	22
5 l truck	-23
5 l two	-18
5 l type	-17
5 l unit	-51
5 l up	34
5 l us	45
5 l use	21
5 l used	33
5 l wall	25
5 l want	27
5 l wants	41
5 l was	31
5 l zone	-62
5 l. #	35
5 l. 's	-29
5 l. ,	71
5 l. -ed	44
5 l. -s	99
5 l. .	20
5 l. /	-62
5 l. :	22
5 l. Name	-47
5 l. one	-63
5 l. unit	-49
5 r )	-53
5 r -	-49
5 r 2	37
5 r :	-25
5 r aa	19
5 r amigos	-45
5 r and	19
5 r are	19
5 r at	29
5 r b	-17
5 r baths	30
5 r batts	-38
5 r blinds	24
5 r brackets	37
5 r bulbs	21
5 r business	-34
5 r but	54
5 r by	-37
5 r came	-35
5 r closets	42
5 r dead	17
5 r digits	-30
5 r doors	-28
5 r eight	16
5 r extra	55
5 r for	54
5 r four	-43
5 r guys	-40
5 r had	-21
5 r has	-19
5 r hinges	23
5 r hole	-41
5 r hooks	58
5 r in	52
5 r is	-71
5 r layers	41
5 r left	37
5 r lights	26
5 r long	17
5 r more	76
5 r nail	31
5 r o'clock	-46
5 r oclock	-27
5 r of	95
5 r on	-31
5 r one	-15
5 r outlets	43
5 r per	59
5 r pulls	16
5 r says	-29
5 r screens	49
5 r should	22
5 r slake	43
5 r spaces	27
5 r square	-18
5 r stars	-57
5 r still	61
5 r the	-79
5 r then	-41
5 r they	16
5 r things	-50
5 r three	19
5 r tile	43
5 r times	-89
5 r to	24
5 r today	-33
5 r tomorrow	-45
5 r treads	17
5 r tripped	-29
5 r way	-62
5 r weekend	-39
5 r went	32
5 r will	27
5 r windows	27
5 r with	-23
5 r won't	26
5 r x	33
5 r. 's	-24
5 r. )	-53
5 r. -	-49
5 r. -ed	19
5 r. -ing	17
5 r. -s	44
5 r. :	-25
5 r. one	-29
5 r. unit	19
60 figures 2	21
60 l 	-20
60 l \$	-34
60 l ,	-18
60 l -	-51
60 l :	16
60 l a	34
60 l about	-30
60 l after	36
60 l are	23
60 l at	92
60 l breaker	-28
60 l by	47
60 l catch	-18
60 l cut	36
60 l eleven	-16
60 l error	-35
60 l for	-21
60 l from	40
60 l got	42
60 l he's	-70
60 l house	77
60 l in	-21
60 l is	50
60 l lot	-30
60 l maybe	-28
60 l need	26
60 l needs	26
60 l net	-46
60 l not	49
60 l number	-72
60 l off	-29
60 l on	23
60 l ordered	23
60 l plate	41
60 l po	-17
60 l put	-24
60 l r	-16
60 l reading	19
60 l say	42
60 l says	48
60 l set	44
60 l side	24
60 l so	16
60 l through	44
60 l to	69
60 l traffic	-24
60 l up	-65
60 l wall	18
60 l wants	53
60 l was	32
60 l with	18
60 l x	42
60 l. #	-20
60 l. \$	-34
60 l. 's	55
60 l. ,	-18
60 l. -	-51
60 l. -ing	55
60 l. -ly	24
60 l. -s	-21
60 l. 1	-28
60 l. :	16
60 l. one	-44
60 l. unit	44
60 l. word	39
60 r -	17
60 r .	43
60 r :	-21
60 r all	44
60 r at	52
60 r before	45
60 r blocks	35
60 r boards	22
60 r brick	27
60 r bucks	-41
60 r chance	-39
60 r dollars	-47
60 r down	80
60 r fifty	-35
60 r flat	18
60 r from	-28
60 r high	38
60 r i	25
60 r if	-22
60 r miles	-38
60 r not	32
60 r oc	21
60 r of	-19
60 r on	-38
60 r or	-42
60 r pavers	39
60 r pulls	18
60 r so	46
60 r the	-17
60 r then	17
60 r they	25
60 r thick	29
60 r to	-40
60 r up	17
60 r week	-28
60 r which	17
60 r wide	36
60 r with	-17
60 r x	27
60 r. 's	19
60 r. -	17
60 r. -s	-26
60 r. .	43
60 r. /	39
60 r. 1	-16
60 r. :	-21
60 r. letter	36
60 r. one	-89
60 r. unit	18
60 r. word	41
60 words	17
99 figures 2	33
99 l \$	-54
99 l -	24
99 l a	-47
99 l an	-66
99 l and	20
99 l at	61
99 l by	19
99 l doing	-20
99 l for	-51
99 l got	-46
99 l humidity's	28
99 l is	-30
99 l it's	15
99 l of	-37
99 l only	23
99 l over	-26
99 l past	50
99 l reading	19
99 l reads	22
99 l return	19
99 l says	-40
99 l that	-40
99 l to	41
99 l under	34
99 l was	46
99 l wide	19
99 l. \$	-54
99 l. 's	18
99 l. -	24
99 l. -ing	24
99 l. -ly	51
99 l. -s	-18
99 l. one	-37
99 l. word	17
99 parts	-57
99 r ,	53
99 r -	27
99 r before	50
99 r bucks	-25
99 r by	20
99 r for	-25
99 r is	-36
99 r next	-39
99 r on	34
99 r or	31
99 r out	30
99 r so	44
99 r to	-34
99 r. ,	53
99 r. -	27
99 r. -ed	-34
99 r. -s	-56
99 r. one	-18
99 r. word	16
99 words	21
999 0figures 4	-59
999 l 	-29
999 l \$	-46
999 l ,	-30
999 l -	-24
999 l .	29
999 l 555	-19
999 l a	-34
999 l about	61
999 l and	86
999 l at	46
999 l be	30
999 l f	-18
999 l for	31
999 l from	-41
999 l going	38
999 l got	30
999 l in	-56
999 l is	20
999 l it	-46
999 l laid	52
999 l lot	-17
999 l no	41
999 l on	-20
999 l out	44
999 l reading	32
999 l reads	43
999 l rise	34
999 l rm	-41
999 l room	-40
999 l section	-33
999 l set	30
999 l side's	33
999 l suite	-28
999 l that's	35
999 l the	-51
999 l there	-46
999 l there's	32
999 l to	42
999 l two	35
999 l wants	19
999 l was	-23
999 l. #	-31
999 l. \$	-46
999 l. 's	49
999 l. ,	-30
999 l. -	-24
999 l. -ing	48
999 l. -s	88
999 l. .	29
999 l. 1	-49
999 l. unit	-25
999 oh	-44
999 r ,	31
999 r -	-55
999 r .	17
999 r 555	-27
999 r :	-24
999 r a	-49
999 r across	24
999 r agree	-38
999 r already	-25
999 r area	-48
999 r before	-23
999 r bucks	-28
999 r centres	31
999 r crew	-19
999 r deep	23
999 r for	-57
999 r going	66
999 r high	58
999 r i	31
999 r k	-33
999 r not	29
999 r number	-21
999 r of	87
999 r off	52
999 r one	35
999 r out	-16
999 r over	-56
999 r pickets	17
999 r screws	37
999 r series	-20
999 r so	19
999 r to	23
999 r two	-18
999 r when	-23
999 r wide	25
999 r x	34
999 r. 's	19
999 r. ,	31
999 r. -	-55
999 r. -s	21
999 r. .	17
999 r. 1	-63
999 r. :	-24
999 r. letter	21
999 r. one	18
999 r. unit	-60
999 r. word	21
999 swallowed	-27
999 swallowed round	-27
999 words	85
999 words round	36
9999 figures 4	-49
9999 figures 5	-19
9999 l 	-23
9999 l ,	-28
9999 l at	102
9999 l for	-29
9999 l from	-35
9999 l in	-23
9999 l switch	-24
9999 l the	-16
9999 l to	17
9999 l. #	-23
9999 l. 's	63
9999 l. ,	-28
9999 l. unit	-17
9999 l. word	-27
9999 r 	-23
9999 r ,	15
9999 r in	-17
9999 r long	53
9999 r so	18
9999 r the	25
9999 r to	32
9999 r x	-21
9999 r. #	-24
9999 r. ,	15
9999 r. letter	-21
9999 r. unit	-21
9999 r. word	-18
9999 words	-30
9999 words round	25
: head 0	39
: head 1	28
: head none	48
< head none	16
Name head none	-107
a a	-38
a aa	27
a about	-57
a across	32
a adds	-40
a aff	18
a agree	-38
a ain't	41
a alder	-25
a alive	-17
a all	-36
a along	35
a already	-22
a also	46
a am	-20
a amigos	-45
a an	-38
a anchor	20
a anchors	61
a and	36
a angry	-35
a another	-44
a anyone	-26
a anything	38
a apart	63
a app	-21
a are	42
a around	18
a as	-35
a ask	-21
a at	19
a away	-52
a b	-41
a baby	-19
a back	68
a backs	-39
a bad	-43
a bag	22
a bags	20
a ball	16
a banksia	-27
a bar	25
a bars	43
a base	40
a bases	-21
a bath	40
a bathroom	-27
a baths	36
a batts	-18
a bay	-41
a be	40
a bead	20
a beam	19
a bedroom	-55
a behind	35
a below	25
a between	32
a big	15
a bin	21
a birch	-39
a bit	26
a black	62
a blade	17
a blades	34
a blank	22
a blind	-23
a block	30
a blocks	84
a blue	-30
a boards	89
a bolt	50
a bolts	55
a boot	-18
a boots	-19
a both	20
a bottom	55
a bought	64
a box	23
a boxes	31
a bracket	46
a brackets	53
a brass	73
a brick	34
a broke	-16
a broken	52
a brown	23
a brush	-16
a brushes	30
a bucks	-65
a buddy	-18
a building	17
a built	-41
a bulbs	35
a bumpers	32
a buried	25
a burned	41
a bushing	27
a business	-56
a but	44
a buy	18
a buzzer	-47
a buzzes	-17
a by	39
a c	-35
a cabinets	22
a cable	-41
a call	-34
a calling	-41
a came	32
a can	62
a can't	-52
a cans	46
a cap	47
a care	-30
a carton	-20
a case	40
a casing	35
a caulk	37
a ceiling	36
a center	67
a centers	68
a centre	48
a centres	36
a cents	-45
a chance	-52
a change	-28
a chimney	40
a chipped	67
a chrome	-16
a circuit	19
a city	-54
a clamps	42
a clean	19
a clear	37
a client	-19
a clips	74
a closed	58
a closet	44
a closets	29
a coat	-78
a coats	16
a code	60
a coffee	38
a coil	35
a cold	34
a color	-33
a colour	-15
a come	-29
a comes	-30
a coming	30
a complaining	-19
a complete	-35
a concrete	-33
a contact	16
a cord	-20
a corner	49
a cost	-26
a could	-34
a count	56
a counter	-19
a countertop	-20
a couplings	46
a cove	19
a cover	28
a covers	-42
a crack	-32
a cracked	85
a crew	-103
a cuts	16
a damaged	40
a dash	-34
a day	-69
a days	-81
a dead	50
a deal	-40
a decks	26
a deep	114
a degree	33
a degrees	-31
a delivered	19
a den	26
a dentists	-88
a digits	-30
a dimmers	17
a disposal	-47
a does	-24
a doesn't	-16
a doing	-46
a dollar	-64
a dollars	-60
a don't	-22
a dont	-23
a door	18
a door's	36
a doors	29
a dot	-39
a double	31
a down	-17
a downstairs	19
a dozen	-71
a drain	23
a drawing	18
a drip	66
a driveway	-28
a drops	51
a dry	28
a dryer	-25
a dumpster	-29
a each	55
a east	-18
a easy	-37
a edge	57
a eggshell	50
a eighths	-27
a eighty	-20
a either	-34
a elbows	63
a eleventh	-44
a elm	-31
a elsewhere	28
a em	72
a empty	-27
a end	25
a ends	55
a enough	21
a euro	-94
a even	51
a every	20
a everybody	-68
a everywhere	-41
a except	44
a excuses	-28
a exit	-16
a expansion	30
a extra	50
a faced	-27
a factory	21
a fall	21
a falls	-31
a family	19
a fan	25
a fans	25
a far	63
a faucet	-19
a fault	-43
a fella	-20
a fence	30
a field	33
a fifteens	20
a fifty	17
a filter	43
a find	-49
a fine	23
a fingers	-33
a finish	-24
a finished	21
a first	-22
a fit	30
a fix	-65
a fixed	-28
a flapper	-58
a flashing	37
a flat	50
a flex	-34
a flicker	35
a flush	-28
a foam	-33
a foot	48
a footer	17
a footers	58
a footings	21
a for	32
a forget	-26
a forgets	-26
a four	-15
a fours	22
a fourteen	25
a framed	-48
a friday	32
a fridays	-34
a front	30
a frost	-31
a ft	-24
a full	56
a furnace	-33
a g	20
a gallon	-37
a game	-31
a gang	-57
a garage	40
a gary	32
a gasket	33
a gate's	-17
a gauge	19
a get	-52
a gets	-33
a gfcis	39
a give	70
a glass	61
a glue	-16
a glued	-46
a go	37
a god	-29
a going	22
a gone	-34
a good	66
a grade	48
a grate	-48
a gray	16
a grease	-26
a green	15
a grille	-74
a grit	22
a ground	-49
a grout	75
a gun	-25
a guy	-52
a guys	-90
a had	-28
a half	17
a hall	113
a hand	-27
a handle	-87
a hangers	99
a hanging	23
a happy	36
a hard	16
a hardware	22
a has	-97
a hasn't	-16
a hatch	-21
a have	34
a he	-47
a he's	-80
a head	-73
a headed	-18
a heads	21
a heater	32
a heavy	27
a held	-24
a helpers	-28
a her	15
a hes	-31
a high	78
a him	-67
a hinge	27
a hire	-39
a his	-29
a holding	35
a hole	-78
a hooks	44
a hose	16
a hot	33
a hour	-18
a hours	-31
a house	37
a hums	-48
a hundred	30
a hundreds	-35
a hung	-26
a hydro	-35
a i	-54
a i'm	-20
a i've	42
a if	-28
a in	18
a inch	34
a inches	36
a inside	-25
a instead	46
a into	26
a invoice	-40
a iron	-44
a is	-49
a ish	-34
a island	-29
a isn't	-15
a it	-36
a it'd	-19
a it'll	-24
a it's	-60
a jacks	22
a job	-41
a joist	25
a july	-43
a junction	20
a just	21
a k	-61
a keep	23
a keeps	-24
a key	-54
a kid	-24
a kids	-23
a killed	-22
a kind	18
a kinds	-58
a kit	52
a kitchen	21
a knobs	42
a knocked	-24
a labeled	27
a ladder	-26
a ladders	18
a laid	39
a lamp	25
a landing	60
a laptop	-21
a larch	-44
a laser	49
a last	-35
a latch	24
a late	-62
a latest	-68
a lath	-19
a laundry	22
a lavs	32
a lay	36
a layer	-72
a layers	41
a lazy	-17
a lead	31
a leaking	26
a leaks	-20
a leaves	19
a left	73
a leg	70
a legs	54
a length	24
a let	-18
a level	-19
a lever	23
a lid	41
a lift	-66
a light	33
a lights	34
a like	-67
a lime	22
a line	-25
a lintel	16
a list	-28
a live	30
a lives	-26
a ln	-15
a load	17
a lol	-20
a long	98
a longer	21
a look	-43
a looks	-54
a loose	16
a lot	-67
a lower	20
a luck	-52
a lunch	-17
a m10	22
a mailbox	-20
a make	-28
a man	-31
a manholes	-17
a manual	-25
a maple	-59
a march	-16
a mat	-37
a mate	-65
a matt	41
a max	56
a me	-16
a men	-38
a metal	-45
a meter	44
a middle	65
a miles	-38
a mill	-25
a minimum	34
a minutes	-20
a mirror	-43
a missing	22
a mix	56
a mixing	17
a mm	19
a moisture	26
a monday	-26
a more	75
a morning	-54
a mosaic	26
a move	49
a moved	-70
a moves	-43
a muppet	-37
a n	24
a nails	49
a need	40
a needs	-42
a new	21
a next	-36
a night	-67
a nil	-33
a nine	-58
a ninety	23
a ninth	-18
a no	-19
a nobody	21
a nobody'll	-28
a noon	-50
a north	39
a nos	35
a nose	37
a not	-35
a nothing	-56
a notice	-77
a number	18
a nuts	57
a o'clock	-85
a oc	63
a oclock	-43
a off	29
a office	-25
a offset	-34
a oh	-34
a ok	-26
a on	20
a ones	20
a open	20
a opened	21
a opening	19
a openings	26
a order	50
a ordered	38
a other	-51
a ought	28
a outlets	73
a outside	-40
a oven	21
a over	20
a packers	-75
a paint	27
a painters	-18
a palings	19
a pan	37
a panel	-73
a panels	58
a pantry	16
a paper	-45
a park	-33
a part	-56
a pascals	25
a pass	-27
a passed	-23
a past	-68
a pattern	-49
a pavers	55
a pay	-41
a pendants	43
a people	-22
a per	83
a pick	-17
a picked	28
a pickets	24
a piers	29
a pinched	-24
a pine	51
a pinned	21
a pins	21
a pipe	34
a place	-33
a planks	19
a plaster	36
a plate	48
a plates	47
a play	-56
a plenty	65
a plumber	-20
a ply	-21
a plywood	35
a pm	-45
a pocket	15
a podium	-64
a point	-20
a points	17
a pole	-78
a pop	-19
a porch	35
a post	26
a potato	-51
a pound	-19
a powder	-21
a primer	46
a proud	24
a pull	20
a pulled	-16
a pulls	49
a pump	40
a punch	-25
a punched	-17
a put	-18
a quart	21
a quid	-42
a quiet	-30
a quit	-34
a radiator	23
a radio	-98
a rafters	48
a rail	31
a rain	-79
a raise	52
a ran	31
a rang	-35
a range	-45
a reads	-26
a ready	-49
a rear	-24
a receps	15
a receptacle	30
a receptacles	50
a red	17
a reducer	52
a remain	22
a replaced	-15
a required	-21
a reset	-20
a return's	-20
a ridge	23
a right	-20
a ring	37
a rise	22
a riser	21
a risers	41
a rolled	-18
a roller	22
a roof	-31
a room	29
a rooms	19
a rotten	18
a rough	18
a round	16
a rubber	27
a rule	-17
a run	23
a rungs	17
a running	26
a safe	48
a sags	-22
a said	-67
a sand	30
a satin	38
a says	-54
a school	-23
a sconces	29
a score	-26
a scratched	22
a screen	31
a screwed	28
a screws	66
a sealed	31
a season	-18
a sec	-23
a second	-71
a send	-27
a sent	16
a series	-24
a seventeen	-22
a seventh	-37
a seventy	60
a shakes	-35
a sharp	-49
a she	36
a she's	-47
a shed	53
a sheets	17
a shelf	42
a shift	-54
a shims	36
a shingles	19
a short	96
a shot	-17
a should	24
a show	-20
a showed	-39
a shower	-40
a shows	-26
a shut	-31
a side	36
a signed	-46
a silicone	-22
a sill	33
a since	-29
a single	22
a sink	52
a sister	29
a site	37
a sits	-19
a six	27
a sixes	-30
a sixteen	76
a sixteenths	-32
a skip	-26
a slab	44
a slabs	-23
a slake	43
a slats	-53
a slope	83
a slow	-50
a so	35
a sold	-22
a some	50
a somebody	-19
a something	-41
a sorry	-20
a sound	-26
a south	23
a space	38
a spacer	-23
a spacers	18
a spaces	27
a spare	42
a spares	20
a split	-16
a spout	35
a spring	-52
a square	-28
a squeaks	48
a st	-31
a stainless	33
a stair	-19
a star	-22
a stars	-57
a start	-35
a state	-36
a step	-33
a steps	18
a stick	24
a sticks	-33
a still	-31
a stock	37
a stone	-36
a stool	-47
a stopper	15
a stops	-35
a store	22
a story	-21
a straight	-42
a straps	21
a strike	20
a stripped	23
a stroke	-20
a stud	27
a studs	112
a style	23
a suction	29
a sunday	-62
a supplier	-31
a supply	42
a sure	-21
a sweep	41
a switch	66
a switches	16
a tag	-24
a take	33
a takes	19
a tall	46
a tap	73
a tapcons	18
a tape	48
a taped	16
a tee	37
a tell	-19
a template	-28
a ten	-16
a tens	36
a tested	-19
a thank	-24
a that	-18
a their	-24
a then	-36
a there	-25
a there's	-35
a theres	33
a these	36
a they	-51
a they're	68
a thick	73
a thing	-67
a things	-84
a think	-17
a thinset	39
a this	-41
a those	-18
a thousand	-43
a thumb	-31
a thursday	-20
a tied	-17
a ties	-32
a tile	63
a tile's	44
a tiles	53
a till	15
a times	-149
a to	32
a today	-15
a toe	-31
a together	-68
a toggles	31
a toilet	44
a toilets	42
a told	-52
a tonight	17
a too	-43
a top	25
a torn	-16
a total	57
a touch	-29
a touched	-18
a towel	41
a track	18
a traffic	-27
a traps	30
a travelers	-20
a tray	-27
a tread	-49
a treads	47
a trip	25
a tripped	-34
a trips	-23
a tub	52
a tube	65
a tuesday	-37
a turned	-37
a twenty	29
a twice	19
a two	20
a twos	40
a type	30
a u	-42
a unless	-23
a until	37
a up	42
a upper	18
a upstairs	-36
a us	-80
a use	25
a used	31
a v	-21
a valve	42
a van	41
a vanities	21
a vanity	-29
a vent	25
a vents	-15
a vinyl	35
a volt	29
a w	33
a wafers	18
a wall	68
a walls	20
a want	23
a wanted	25
a wants	-16
a was	-30
a washers	30
a waste	58
a watch	-23
a water	-59
a wax	-19
a way	-75
a ways	-61
a we	17
a we're	16
a wear	-20
a wednesday	35
a week	-54
a weekend	-16
a were	17
a what	23
a whatever	-41
a when	-16
a which	42
a white	39
a who	-43
a whole	-26
a wide	59
a will	46
a window	-33
a windows	23
a wiped	-31
a wire's	38
a wired	21
a wood	-17
a word	-49
a work	31
a works	-48
a would	-44
a wouldn't	-88
a wrong	-16
a wrongs	-49
a x	68
a yard	-78
a yesterday	24
a yet	-58
a you	-41
a you're	51
a zero	-19
a zip	-60
b a	-41
b about	21
b above	44
b absent	-72
b ac	31
b across	23
b actually	17
b add	94
b addendum	-15
b address	-31
b adds	34
b adhesive	44
b after	19
b against	28
b air	25
b aisle	-50
b alarm's	-19
b allow	79
b already	26
b alright	-41
b amp	99
b amps	93
b an	-45
b anchors	34
b and	29
b another	-31
b anti	29
b any	-17
b anything	41
b apart	50
b apartment	-55
b apiece	32
b appliance	18
b apt	-47
b architect	41
b are	46
b around	-23
b arrived	52
b arsenal	-31
b asked	59
b attic	-21
b b	-59
b badge	-15
b bag	19
b bags	27
b bakery	-20
b baluster	-49
b bar	58
b basement	-51
b basin	21
b bath	-20
b bath's	20
b bay	-33
b bays	-85
b bead	23
b beam	-29
b bearing	-25
b beat	-31
b because	20
b bed	-56
b bedroom	-72
b bedrooms	-21
b been	-22
b before	-18
b belts	30
b bench	53
b bent	27
b better	34
b between	-58
b big	-59
b billed	-50
b bin	-42
b birdied	-50
b black	33
b bldg	-36
b blew	26
b blinds	25
b blood	-92
b blower	53
b boards	44
b bolt	16
b bolted	29
b bolts	64
b booked	-61
b boss	-48
b both	-74
b bought	47
b bout	28
b box	-29
b boxes	24
b boy	-19
b bracket	17
b brackets	45
b break	-45
b breaker	-37
b breaker's	52
b breakers	56
b brick	20
b bring	138
b bringing	49
b broke	63
b brought	72
b brushed	-17
b buckets	28
b building	-33
b built	-31
b bulb	28
b bumpers	34
b bunnings	-49
b burned	46
b busted	-39
b buy	92
b cable	32
b call	32
b calls	61
b cam	-68
b came	88
b camera	-44
b cans	30
b cap	20
b card	28
b carpet	-38
b carton	28
b cartridge	-32
b casing	-36
b cat	-17
b catch	-26
b cats	-31
b caulk	-29
b cause	22
b cell	-31
b center	50
b centres	21
b cfm	67
b ch	-63
b changed	58
b channel	-74
b chapter	-22
b charge	-43
b charged	-57
b chelsea	-26
b chimney	-37
b circuit	-74
b city	-24
b clamps	29
b class	-41
b cleaned	27
b clear	18
b clearance	16
b clips	39
b close	26
b closer	38
b closes	-42
b cloud	-17
b co	28
b coat	-38
b code's	-73
b cold	42
b collar	51
b colour	-26
b column	-27
b come	-17
b comes	-19
b coming	-18
b composite	16
b confirmation	-31
b control	51
b copper	29
b corner	41
b cost	-18
b counter	-37
b counter's	19
b county	-49
b cover	39
b crack	18
b cracked	49
b crane's	-37
b credit	17
b crew	-19
b crowned	53
b cure	34
b cut	91
b cutout's	18
b cycles	55
b cylinder	35
b damper	25
b dash	-39
b day	-74
b days	-28
b dead	21
b deck	37
b deep	31
b degrees	27
b delivered	16
b den	60
b desk	-51
b detail	-44
b diagonals	69
b dialed	25
b did	-46
b didn't	-21
b dining	-27
b dip	-29
b display	-58
b do	-67
b dock	-27
b doing	-68
b don't	-42
b done	21
b door	-60
b doors	-15
b double	-37
b down	61
b downspouts	19
b downstairs	35
b dozen	-34
b drain	18
b draw	43
b drawer	-38
b drawing	43
b draws	17
b drew	-28
b drop	52
b dropped	20
b drops	31
b drove	20
b dry	70
b dryer	-20
b drywall	-52
b drywall's	26
b duct	19
b duct's	24
b dug	15
b dwg	-37
b dye	-15
b e	-22
b each	74
b east	-23
b edge	38
b egress	-52
b eight	38
b eighteen	44
b eighth	23
b eighths	79
b eighty	-40
b elbows	30
b electrician	-35
b elevation	-27
b elevator	-57
b eleven	17
b end	31
b ends	-47
b engine	-25
b entry	-25
b episode	-21
b epoxy	-46
b error	-48
b exam	-30
b except	30
b exit	-50
b expires	-94
b extension	-17
b exterior	-52
b f	-20
b failed	-18
b fall	-24
b fall's	19
b falls	-45
b fan	52
b fans	37
b far	43
b fault	-16
b feeder	-28
b feeder's	-30
b feeds	-23
b feet	42
b fell	59
b field	-34
b fifteen	37
b fifty	58
b figure	24
b figured	-18
b fill	-37
b final	-35
b fit	-51
b fix	-47
b flange	25
b flashes	-83
b flat	-59
b flight	-46
b flip	-33
b floor's	20
b flue	50
b footers	34
b footing	18
b footing's	38
b footy's	-16
b formula	-36
b found	52
b four	49
b fourth	-60
b frame	-48
b framed	22
b framing	-21
b friday	-17
b fridge	23
b from	-30
b full	20
b g	-36
b gallon	28
b gallons	32
b game	-32
b gap	48
b gap's	27
b garage	60
b gas	-22
b gasket	19
b gaskets	20
b gate	-43
b gate's	-20
b gauge	28
b gauged	43
b gave	16
b generator	82
b get	48
b gets	53
b getting	26
b gimme	54
b give	-15
b gives	-37
b glue	58
b glued	23
b go	30
b goal	-49
b goes	26
b going	-20
b gone	30
b got	23
b gr	44
b grab	53
b gray	-31
b great	-25
b green	-54
b grid	30
b ground	15
b grout's	58
b guide	-24
b guy	22
b guys	-36
b had	32
b half	37
b hall	39
b hallway	29
b handed	-28
b handrail's	19
b hang	20
b hangers	43
b hard	35
b hardware	-39
b has	55
b hatch	-40
b have	55
b he	-106
b he'll	-29
b he's	-160
b head	51
b header	30
b header's	58
b headroom's	51
b heads	16
b hearth	18
b heat	36
b heater's	33
b held	55
b her	-33
b here	-52
b hes	-75
b high	27
b highway	-28
b him	-78
b hinge	34
b hinges	-51
b his	-96
b hit	-31
b hits	37
b hold	-58
b hole's	50
b holes	24
b holiday	-18
b home	-48
b homeruns	-26
b hood	34
b hooks	37
b hour	-57
b hours	-73
b how	27
b humidity	80
b humidity's	42
b hundred	37
b hung	70
b hurricane	17
b hvac	16
b hwy	-75
b i'd	46
b i've	25
b if	35
b im	-34
b in	-25
b inch	46
b inches	23
b inside	59
b inspector	-41
b install	-33
b instead	23
b insulation	-33
b into	20
b inv	-51
b invoice	-49
b island	41
b it	18
b it'll	30
b it's	-15
b item	-47
b items	-54
b its	18
b itself	-21
b jan	32
b job	-58
b joint	-16
b joists	54
b jumper	-73
b just	93
b k	-36
b keep	52
b kept	-22
b key	-58
b keyed	-53
b keynote	-29
b kick	37
b kicks	85
b kid	-47
b kid's	-24
b kids	49
b kind	50
b kit	18
b kitchen	66
b kits	38
b knee	-16
b knobs	16
b knock	-28
b l	26
b l1	26
b l2	16
b label	19
b ladder	-16
b lags	21
b laid	65
b landing	39
b lands	-25
b lane	-30
b lap	88
b last	26
b lb	45
b least	69
b leave	31
b leaves	67
b led	36
b left	49
b leg	83
b lengths	21
b less	41
b let	30
b level	-88
b light	-18
b light's	-16
b lights	46
b limit's	28
b line	-25
b little	-35
b live	15
b living	-28
b load	35
b lobby	37
b local	-33
b lock	18
b lockbox	-32
b log	-33
b logged	19
b longer	-21
b look	-40
b loop	-41
b lot	-94
b lounge	47
b low	39
b lumber	-21
b lunch	-34
b lvl	-37
b m	-57
b made	-64
b make	51
b man	-42
b marble	43
b marcy	-15
b margin's	-20
b mark	-48
b marked	-46
b marker	-19
b materials	-76
b max	38
b maximum	51
b maybe	26
b mc	23
b measure	-29
b measured	17
b medallion	25
b medium	67
b meeting	-56
b meter	77
b metered	42
b metres	40
b mike	-28
b mil	18
b mile	-28
b millimeter	25
b million	-42
b mind	16
b mine	-38
b minus	21
b minutes	49
b mirror	25
b mirror's	39
b missing	44
b mix	46
b mm	35
b mode	-53
b moisture	104
b moisture's	40
b mold	23
b mon	-54
b moon	-45
b more	28
b mounted	20
b move	44
b moved	-59
b mrs	-37
b ms	-31
b mud	-32
b must	27
b my	-93
b nah	-19
b nail	30
b nailed	39
b nails	49
b nd	-18
b near	-33
b need	106
b needs	83
b net	-41
b next	-33
b nfpa	-17
b nine	-18
b nineteen	-30
b no	67
b nobody	-49
b none	37
b north	45
b note	-33
b nothing	47
b now	60
b number	-183
b number's	-70
b nursery	21
b nuts	19
b oak	32
b odds	-35
b of	49
b office	-32
b offset	30
b oh	-40
b ohms	57
b oil	-42
b okay	-58
b old	-73
b one's	-20
b only	79
b open	16
b opened	17
b opening	44
b opening's	51
b opens	-44
b option	-22
b or	-19
b order	20
b ordered	77
b other	-23
b oughta	29
b our	-60
b outlet	-17
b outside	20
b oven	35
b over	16
b owes	-17
b owner	-20
b p	-42
b pack	-65
b packed	38
b packs	62
b pad	37
b page	-52
b paid	-39
b paint	-26
b painted	-55
b panel's	34
b panels	16
b paper	-37
b par	-45
b parked	-34
b part	-57
b passed	-30
b past	-18
b patch	40
b pavers	17
b pay	-41
b pcs	-44
b per	-19
b permit	-25
b pete	-31
b phase	-38
b photo	-22
b pick	67
b pickets	101
b pieces	47
b pier	-46
b pin	-80
b pinned	17
b pipe	57
b pitch	36
b place	-46
b plans	58
b plant	47
b plaster	76
b plastic	-27
b plates	37
b play	-28
b please	74
b plot	-44
b plug	30
b plus	68
b po	-43
b point	37
b pole	-49
b poly	-27
b popped	-43
b porch	18
b port	-26
b pounds	18
b pour	-42
b poured	34
b premium	-23
b press	-22
b pressure	18
b prob	-28
b psalm	-43
b psi	50
b pu	26
b pull	30
b pulled	-60
b pulling	55
b pulls	16
b pumped	59
b put	72
b pvc	21
b qt	22
b qty	64
b quarters	22
b quiet	-18
b quoted	-54
b r	-49
b rack	-67
b rafters	62
b rail	28
b rail's	18
b rain	21
b raise	49
b ramp	23
b ran	30
b range	40
b rapid	-38
b rate's	-26
b rated	45
b ratio's	61
b rcbo	17
b re	-42
b reach	-16
b read	64
b reading	64
b reads	66
b real	32
b rebuilt	19
b receptacles	18
b red	-17
b ref	-18
b register's	34
b relief	54
b rental	-66
b replace	83
b report	-55
b reset	24
b rest	19
b return	66
b return's	38
b returned	19
b reveal's	24
b rfi	-24
b rh	52
b right	-50
b rip	25
b ripped	29
b rise	54
b riser	-20
b rm	-74
b road	-20
b rock	39
b rod	31
b rolled	-52
b rolls	-27
b roof	-24
b rooftop	-17
b room	-49
b rough	19
b roughed	30
b round	-31
b route	-17
b row	-56
b rtu	-74
b rubber	-24
b rule	26
b run	54
b running	30
b s	16
b sags	44
b same	-26
b sand	-47
b sanded	-41
b sandstone	18
b sash	16
b saturday	-35
b saves	-36
b saw	-29
b say	34
b saying	35
b scale	-66
b sch	-60
b screed	24
b screwed	34
b screws	55
b seal	-37
b sealed	-46
b season	-17
b seat	41
b sec	-42
b second	23
b section	-45
b see	-22
b send	-44
b sent	61
b served	-43
b set	132
b sets	-44
b setting	-34
b seven	-20
b seventeen	22
b seventy	72
b she	-62
b she'll	-67
b she's	-92
b shear	16
b sheathing	16
b shed	-47
b sheet	-49
b sheets	22
b shelf	27
b shellac	23
b shelves	48
b shelving	-50
b shift	-19
b shld	17
b short	135
b shorted	75
b should	85
b should've	67
b shout	-15
b shoved	-18
b shower	-30
b shows	44
b side	51
b side's	41
b sill	70
b sill's	37
b since	-87
b sister	73
b site	-42
b sitting	-17
b six	38
b sixteen	32
b sixty	58
b slab	49
b slab's	62
b slake	57
b slept	-46
b slump	87
b smoko	-29
b snag	-21
b snapped	-18
b snow	29
b so	44
b soak	41
b sockets	21
b sold	46
b some	40
b somebody	71
b something	-24
b sometime	-64
b somewhere	82
b song	-20
b sorry	33
b sorted	16
b south	17
b space	19
b spaced	38
b spacing	61
b span's	20
b spare	32
b spec	100
b spent	27
b spot	-19
b spring's	-29
b spurs	-39
b sq	19
b square	32
b squares	28
b squeak	32
b stage	-40
b stain	-23
b stainless	33
b stair	-73
b standing	31
b start	-34
b starts	-17
b stat	33
b state	-24
b static	40
b static's	33
b station	-19
b step	-19
b step's	65
b still	27
b stitch	-36
b stock	43
b stone	47
b stops	26
b strap	16
b stringer	16
b strip	32
b strips	36
b stub	45
b stuck	27
b stud	22
b studio	-23
b studs	65
b stuff	66
b style	17
b sub	-28
b subcool	35
b subcool's	28
b subfloor	49
b subfloor's	21
b suite	-35
b summer	-36
b superheat	43
b superheat's	41
b supplier	20
b supply	41
b swap	51
b swapped	25
b sweet	-34
b swing	-24
b table	-96
b tag	-61
b take	-27
b takes	-29
b tank	-19
b tap	44
b tape	48
b tea	16
b tel	-19
b temp	87
b ten	-32
b tenant	-36
b terms	-70
b test	60
b tested	72
b th	-41
b than	54
b that	-23
b that's	-38
b the	-18
b their	-26
b them	20
b then	-55
b there	-21
b thermostat	42
b thermostat's	45
b they	-24
b they'll	-45
b they're	-103
b they've	-48
b thick	43
b thin	63
b think	-22
b thinks	-36
b thinset	69
b thirteen	83
b thirty	23
b this	-72
b though	40
b three	30
b threw	15
b throw	48
b throwing	-38
b thurs	-26
b thursday	-33
b ticket	-29
b tied	20
b ties	55
b tight	33
b til	-35
b tile	37
b tiles	28
b till	-39
b time	-37
b times	-66
b to	37
b toast	43
b toilet	61
b tomorrow	-27
b top	-21
b torque	54
b torqued	33
b total	51
b tracking	-46
b traffic	-24
b trailer	-62
b trap	43
b tread	-32
b treads	46
b trench	19
b trim	55
b trimmed	43
b tripped	-41
b truck	33
b truck's	-89
b tube	19
b tubes	32
b turned	-56
b twelve	48
b twenty	57
b two	30
b txt	-36
b type	-78
b u	-63
b under	22
b unit	-82
b united	-27
b units	-41
b uppers	26
b ups	20
b upstairs	51
b us	16
b used	106
b valve	81
b van	68
b vanity	75
b vent	49
b version	-23
b vikings	-78
b volt	-16
b volts	59
b wait	46
b waited	-78
b waiting	35
b walk	-36
b wall	71
b wall's	53
b wallpaper	-31
b walnut	-46
b want	45
b wanted	62
b wants	77
b wardrobe	-46
b was	19
b washer	21
b waste	26
b water's	50
b way	-49
b we	24
b we've	21
b wednesday	-27
b week	-54
b well	15
b went	22
b wet	66
b what's	-22
b when	20
b white	41
b wide	52
b width	45
b will	25
b window	-60
b windows	22
b wire	20
b wire's	54
b with	36
b wo	-23
b won't	48
b wood	-19
b wood's	42
b work	-25
b worked	-31
b working	-20
b works	-24
b worn	17
b x	53
b yard	-49
b yeah	-21
b year	-30
b you	-22
b your	-42
b zero	-63
b zone	-88
bare 0	17
bare 1	-58
bare 2	60
bare 3	16
claims 1	18
claims 2	-36
form 0figures 2	-19
form 0figures 4	-59
form figures 2	33
form figures 4	-49
form figures 5	-53
form oh	-44
form parts	61
form swallowed	-27
form swallowed round	-28
head 0	26
head 1	78
head 3	49
head none	-27
l of cars	-43
l of clock	-86
l of kin	-19
l of media	18
l of money	-53
l of papers	-31
l of past	29
l of phones	-73
l of roads	-109
l of school	-50
l of services	-27
l of sport	-31
l1 	34
l1 
	-125
l1 #	-30
l1 \$	-116
l1 (	31
l1 +	63
l1 ,	48
l1 -	-54
l1 .	27
l1 /	21
l1 1	-21
l1 3	-19
l1 555	-19
l1 9	-18
l1 :	78
l1 <	16
l1 @	16
l1 above	23
l1 add	79
l1 addendum	-15
l1 adds	34
l1 aisle	-50
l1 all	75
l1 allow	44
l1 an	-82
l1 and	91
l1 another	-24
l1 apartment	-32
l1 apt	-47
l1 are	23
l1 around	-15
l1 at	40
l1 b	-16
l1 bath	-88
l1 bay	-95
l1 be	62
l1 bed	-65
l1 bedroom	-93
l1 before	-54
l1 better	19
l1 between	-22
l1 big	-30
l1 bldg	-49
l1 bottom	-48
l1 bought	89
l1 bout	43
l1 box	-23
l1 bracket	32
l1 breaker	-68
l1 bring	116
l1 building	-39
l1 but	29
l1 buy	111
l1 by	42
l1 came	16
l1 cat	-25
l1 catch	-18
l1 ch	-63
l1 change	36
l1 channel	-38
l1 chapter	-22
l1 circuit	-91
l1 class	-19
l1 closet	40
l1 cloud	-17
l1 coat	-46
l1 code	-83
l1 code's	-61
l1 counted	32
l1 counter	-22
l1 cracked	23
l1 cut	79
l1 d	-23
l1 dash	-29
l1 day	-115
l1 detail	-33
l1 dock	-27
l1 doing	-32
l1 done	32
l1 door	-67
l1 double	-39
l1 down	22
l1 drawer	-33
l1 drove	22
l1 dry	45
l1 e	-22
l1 each	-49
l1 edge	31
l1 eight	-19
l1 elevator	-23
l1 eleven	-20
l1 error	-48
l1 every	-35
l1 exit	-54
l1 exterior	-31
l1 f	-28
l1 fall's	19
l1 first	-25
l1 five	-38
l1 flat	-41
l1 floor	-53
l1 formula	-36
l1 found	79
l1 four	-38
l1 fourteen	-34
l1 framed	35
l1 fresh	-22
l1 from	-34
l1 front	19
l1 full	45
l1 gap	20
l1 garage	73
l1 gate's	-16
l1 get	149
l1 gets	56
l1 getting	27
l1 gimme	54
l1 go	53
l1 going	38
l1 good	-33
l1 got	103
l1 grab	79
l1 grade	-30
l1 had	29
l1 hall	65
l1 has	90
l1 have	88
l1 he's	-91
l1 header's	23
l1 her	-29
l1 highway	-16
l1 hold	-15
l1 hole	-56
l1 hole's	49
l1 humidity's	34
l1 hung	51
l1 in	-47
l1 inch	69
l1 install	-31
l1 invoice	-43
l1 is	58
l1 it	93
l1 it's	-26
l1 item	-47
l1 its	15
l1 job	-39
l1 just	76
l1 key	-63
l1 keynote	-29
l1 kitchen	57
l1 laid	52
l1 lane	-30
l1 last	19
l1 least	69
l1 leaves	58
l1 left	36
l1 level	-58
l1 lift	-21
l1 like	-17
l1 limit's	28
l1 line	-51
l1 local	-33
l1 longer	-21
l1 loop	-42
l1 lot	-97
l1 lvl	-43
l1 m	-45
l1 mark	-43
l1 marker	-19
l1 maybe	78
l1 me	32
l1 measure	-47
l1 measured	28
l1 measures	30
l1 minus	23
l1 mix	52
l1 mode	-53
l1 moisture	44
l1 nd	-33
l1 need	130
l1 needs	84
l1 net	-49
l1 new	-92
l1 nine	-20
l1 nineteen	-25
l1 not	51
l1 note	-33
l1 now	59
l1 number	-191
l1 number's	-66
l1 of	-41
l1 off	-26
l1 oh	-34
l1 old	-81
l1 one	-65
l1 ones	32
l1 only	79
l1 open	-21
l1 opened	-28
l1 opening's	32
l1 or	-38
l1 ordered	41
l1 ought	-39
l1 out	88
l1 over	25
l1 p	-49
l1 page	-43
l1 paid	-25
l1 panel's	34
l1 par	-22
l1 phase	-20
l1 pin	-22
l1 plant	47
l1 plate	47
l1 plot	-44
l1 plus	77
l1 po	-19
l1 port	-29
l1 poured	28
l1 press	-18
l1 pressure's	-36
l1 psalm	-43
l1 pull	48
l1 pulling	56
l1 put	54
l1 quarter	53
l1 quoted	-44
l1 r	-61
l1 rack	-30
l1 rail's	18
l1 ran	76
l1 rate's	-26
l1 rated	41
l1 read	74
l1 reading	44
l1 reads	39
l1 red	47
l1 replaced	49
l1 return	19
l1 returned	24
l1 rev	-25
l1 rfi	-24
l1 rh	33
l1 right	-39
l1 rise	34
l1 riser	-23
l1 rm	-104
l1 road	-23
l1 room	-64
l1 row	-28
l1 rtu	-17
l1 run	58
l1 running	34
l1 runs	21
l1 said	25
l1 saves	-36
l1 say	52
l1 says	36
l1 season	-17
l1 second	-33
l1 section	-44
l1 see	48
l1 sent	36
l1 set	82
l1 she's	-44
l1 sheet	-55
l1 shelf	-34
l1 short	102
l1 shower	-33
l1 shows	28
l1 side	33
l1 side's	36
l1 since	-41
l1 sixty	-16
l1 slab	15
l1 so	106
l1 solid	-27
l1 spacing	30
l1 span's	20
l1 spec	28
l1 spurs	-39
l1 square	-49
l1 stage	-40
l1 stair	-37
l1 static's	18
l1 station	-19
l1 step	-52
l1 still	66
l1 strike	-43
l1 suite	-32
l1 superheat	29
l1 swapped	18
l1 sweet	-34
l1 switch	-61
l1 t	18
l1 table	-32
l1 take	37
l1 takes	-32
l1 temp	32
l1 ten	-29
l1 than	55
l1 that	-88
l1 that's	-16
l1 the	-86
l1 then	-44
l1 there	-23
l1 there's	21
l1 theres	15
l1 they're	-18
l1 thing	-37
l1 thinset	71
l1 this	-30
l1 ticket	-17
l1 til	-29
l1 till	-64
l1 times	24
l1 to	65
l1 tomorrow	24
l1 took	65
l1 traffic	-24
l1 trailer	-21
l1 tread	-38
l1 treads	32
l1 truck	-54
l1 turned	-34
l1 twelve	-35
l1 two	36
l1 type	-62
l1 under	83
l1 unit	-134
l1 up	38
l1 us	28
l1 use	44
l1 used	105
l1 vanity	34
l1 version	-23
l1 wait	34
l1 wall	63
l1 wall's	31
l1 want	64
l1 wanted	42
l1 wants	101
l1 was	62
l1 we're	58
l1 well	36
l1 went	-45
l1 what	-24
l1 wide	19
l1 wire's	22
l1 with	17
l1 wo	-23
l1 x	88
l1 you	-19
l1 your	-46
l1 zone	-89
l1 £	-52
l1. #	29
l1. \$	-116
l1. 's	91
l1. (	31
l1. +	63
l1. ,	48
l1. -	-54
l1. -ed	53
l1. -ing	44
l1. -ly	64
l1. -s	60
l1. .	27
l1. /	-106
l1. 1	-58
l1. :	78
l1. <	16
l1. @	16
l1. Name	-107
l1. letter	-45
l1. one	-111
l1. unit	-43
l1. £	-52
l2 	-16
l2 
	40
l2 %	-25
l2 '	60
l2 (	51
l2 )	-31
l2 ,	29
l2 1	-64
l2 10	31
l2 118	-22
l2 14	18
l2 18	18
l2 3	-29
l2 31	-63
l2 34	26
l2 400	-18
l2 5	-20
l2 555	-27
l2 6	-44
l2 60	20
l2 600	32
l2 68	39
l2 7	-19
l2 9	25
l2 :	-15
l2 a	-141
l2 address	-26
l2 allow	48
l2 alright	-18
l2 amps	24
l2 an	-52
l2 and	-20
l2 anything	32
l2 asked	39
l2 at	-112
l2 b	-23
l2 back	-27
l2 bags	20
l2 bar	15
l2 basement	46
l2 be	45
l2 bedroom	31
l2 bench	43
l2 billed	-50
l2 block	40
l2 bolts	16
l2 book	30
l2 booked	-19
l2 bottom	22
l2 box	36
l2 boxes	68
l2 boy	-19
l2 breaker's	31
l2 bring	27
l2 broke	82
l2 built	-23
l2 burned	45
l2 but	-21
l2 by	-72
l2 c	-18
l2 call	83
l2 calls	52
l2 came	24
l2 cap	43
l2 cartons	21
l2 change	-59
l2 changed	32
l2 charge	-20
l2 charged	-57
l2 chimney	-37
l2 clamps	37
l2 class	-18
l2 clips	-16
l2 closer	43
l2 closes	-29
l2 code	76
l2 column	-30
l2 come	-16
l2 comes	22
l2 coming	-35
l2 corner	36
l2 cost	-16
l2 could	21
l2 county	-20
l2 cure	34
l2 cut	63
l2 dip	-29
l2 dog	-29
l2 don't	-88
l2 done	44
l2 double	-35
l2 down	21
l2 dropped	23
l2 dryer	-31
l2 edge	19
l2 eight	22
l2 eighths	22
l2 elbows	17
l2 em	33
l2 end	17
l2 epoxy	-37
l2 except	-22
l2 extension	-17
l2 fan	-32
l2 fault	-21
l2 feet	-21
l2 fifty	-25
l2 finish	16
l2 first	42
l2 fitted	22
l2 five	17
l2 flue	49
l2 foot	44
l2 for	-59
l2 forty	-33
l2 four	65
l2 fourteen	-17
l2 fourth	-54
l2 friday	-39
l2 from	-50
l2 ft	37
l2 full	-50
l2 g	-36
l2 gate	-25
l2 gave	34
l2 get	-15
l2 give	-40
l2 glass	32
l2 glue	15
l2 good	19
l2 gotta	52
l2 grab	-22
l2 grid	19
l2 guy	53
l2 had	-26
l2 half	-26
l2 hand	18
l2 handrail	16
l2 hardware	-55
l2 have	41
l2 he	-38
l2 he's	-23
l2 head	64
l2 header	28
l2 header's	22
l2 heads	-28
l2 heat	42
l2 held	49
l2 her	-41
l2 here	-45
l2 hes	-23
l2 high	19
l2 hinges	-37
l2 his	-30
l2 hold	-57
l2 hole	21
l2 hours	-56
l2 house	-23
l2 humidity	46
l2 hundred	31
l2 hung	19
l2 i	96
l2 i'd	45
l2 i'll	28
l2 i'm	18
l2 in	-53
l2 inches	48
l2 inside	31
l2 instead	61
l2 it	18
l2 it'll	45
l2 joists	31
l2 k	-21
l2 kid	-47
l2 kit	30
l2 kitchen	-34
l2 left	51
l2 leg	68
l2 lengths	31
l2 level	-24
l2 line	-19
l2 lock	22
l2 long	25
l2 loose	51
l2 low	54
l2 lunch	-33
l2 make	82
l2 max	19
l2 maybe	-48
l2 me	-25
l2 meter	62
l2 mil	-54
l2 mile	-27
l2 million	-41
l2 minute	-35
l2 minutes	57
l2 missing	57
l2 mm	37
l2 monday	30
l2 more	38
l2 morning	37
l2 mud	-22
l2 my	-24
l2 new	16
l2 nineteen	-37
l2 no	-103
l2 north	23
l2 not	-73
l2 number	-33
l2 of	-62
l2 of body	-25
l2 of cars	-57
l2 of clock	-47
l2 of food	-38
l2 of kin	-65
l2 of money	-80
l2 of past	-17
l2 of roads	43
l2 of school	-59
l2 of services	-33
l2 off	-64
l2 office	-25
l2 offset	30
l2 oh	-38
l2 ohms	23
l2 ok	-25
l2 old	-17
l2 on	-33
l2 one	-25
l2 only	66
l2 opening	25
l2 or	20
l2 order	17
l2 out	-46
l2 outlets	16
l2 over	16
l2 owes	-17
l2 pack	-21
l2 paint	-17
l2 panel	-20
l2 passed	-24
l2 past	-21
l2 pay	-29
l2 per	-25
l2 pick	84
l2 picked	44
l2 pickets	87
l2 pipe	54
l2 plan	26
l2 plaster	20
l2 plate	-38
l2 play	-22
l2 please	16
l2 pressure's	42
l2 primer	24
l2 pumped	26
l2 put	66
l2 quarter	-36
l2 r	-61
l2 rail	41
l2 raise	41
l2 ran	-49
l2 real	39
l2 red	-52
l2 rod	15
l2 room	-36
l2 rough	20
l2 round	-44
l2 rtu	-53
l2 runs	-19
l2 sand	-28
l2 sanded	-66
l2 says	22
l2 scale	-17
l2 screws	52
l2 see	-32
l2 set	60
l2 sets	-50
l2 seven	-24
l2 seventy	42
l2 she	-43
l2 she'll	-47
l2 she's	-28
l2 sheets	-28
l2 shelf	35
l2 shim	39
l2 shop	-21
l2 short	56
l2 shorted	72
l2 shot	26
l2 should	64
l2 side	-24
l2 sill	58
l2 sixteen	17
l2 so	19
l2 soak	41
l2 sockets	21
l2 sometime	-35
l2 somewhere	67
l2 space	19
l2 spec	73
l2 split	18
l2 stair	-35
l2 stairs	-38
l2 start	24
l2 sticks	28
l2 strap	16
l2 studs	44
l2 sub	-28
l2 subfloor	20
l2 subfloor's	18
l2 swap	22
l2 switch	19
l2 table	-50
l2 take	-23
l2 tape	32
l2 temp	23
l2 ten	-42
l2 tested	71
l2 that	60
l2 that's	-27
l2 the	-81
l2 them	18
l2 there	-30
l2 there's	33
l2 thermostat's	39
l2 they're	-43
l2 thin	25
l2 third	-26
l2 thirty	-16
l2 this	-18
l2 three	49
l2 through	-18
l2 thursday	-58
l2 tile	22
l2 to	-37
l2 toast	32
l2 toilet	16
l2 tomorrow	-51
l2 torqued	33
l2 trap	46
l2 twenty	33
l2 two	-28
l2 type	-54
l2 u	-29
l2 under	-36
l2 unit	-26
l2 vanity	47
l2 wall	38
l2 walls	-35
l2 wants	-17
l2 was	-114
l2 washer	37
l2 water	30
l2 we	32
l2 we've	21
l2 went	41
l2 were	30
l2 when	16
l2 which	25
l2 white	18
l2 width	45
l2 will	36
l2 window	-46
l2 windows	24
l2 wood	20
l2 zero	-57
l2. #	-16
l2. %	-25
l2. '	60
l2. (	51
l2. )	-31
l2. ,	29
l2. -ed	35
l2. -ing	-25
l2. -ly	-25
l2. -s	64
l2. /	31
l2. :	-15
l2. Name	-47
l2. letter	35
l2. n't	-73
l2. one	-47
l2. unit	24
l3 (	27
l3 ,	27
l3 /	22
l3 1	-44
l3 1.5	36
l3 10	-58
l3 12	34
l3 15	31
l3 16	-33
l3 2	23
l3 20	16
l3 24	25
l3 26	18
l3 450	-21
l3 5	-51
l3 6	26
l3 7	-46
l3 8	19
l3 9	-44
l3 ;	25
l3 a	43
l3 all	-53
l3 am	-30
l3 amp	25
l3 amps	47
l3 an	63
l3 apart	35
l3 apiece	32
l3 are	-15
l3 as	20
l3 at	-68
l3 b	-23
l3 base	20
l3 basement	-27
l3 bath	67
l3 bay	85
l3 be	-33
l3 better	17
l3 between	-70
l3 boards	22
l3 book	-29
l3 boss	-19
l3 both	-26
l3 bottom	25
l3 bought	-24
l3 boxes	-40
l3 busted	-32
l3 but	-37
l3 by	24
l3 call	-48
l3 came	64
l3 can't	22
l3 capped	25
l3 cause	-22
l3 change	45
l3 changed	32
l3 channel	-51
l3 circuit	33
l3 cleaned	47
l3 clear	38
l3 clips	33
l3 code	-27
l3 comes	-19
l3 crack	22
l3 cracked	29
l3 crane's	-29
l3 cut	40
l3 dryer	36
l3 each	75
l3 eight	32
l3 eighty	-50
l3 ends	-23
l3 every	16
l3 except	-18
l3 extension	22
l3 failed	-18
l3 fence	23
l3 flat	-24
l3 footers	20
l3 footy's	-16
l3 for	22
l3 four	-15
l3 fourteen	16
l3 fridge	21
l3 ft	21
l3 gap	30
l3 get	-78
l3 give	49
l3 goal	-39
l3 goes	47
l3 going	-44
l3 gone	28
l3 grab	42
l3 gray	-32
l3 guy	-25
l3 half	16
l3 hardware	-17
l3 have	-22
l3 he	-58
l3 he's	-37
l3 heads	44
l3 her	-25
l3 hes	-48
l3 him	-45
l3 hinge	22
l3 his	-23
l3 hit	-21
l3 hole	26
l3 hood	23
l3 hour	-24
l3 hours	-34
l3 house	23
l3 hundred	-32
l3 hung	34
l3 i	22
l3 i'd	40
l3 i'm	32
l3 i've	27
l3 if	70
l3 in	-29
l3 inch	43
l3 inches	-39
l3 inside	-19
l3 is	-38
l3 island	22
l3 it's	-23
l3 its	-36
l3 jumper	-54
l3 keep	33
l3 key	-28
l3 kicks	44
l3 knobs	16
l3 knock	-28
l3 lady	-17
l3 last	-36
l3 left	-30
l3 leg	56
l3 like	16
l3 long	15
l3 look	-18
l3 made	-53
l3 me	27
l3 meter	19
l3 mirror's	29
l3 mm	-16
l3 more	29
l3 morning	-16
l3 move	42
l3 ms	-31
l3 my	-37
l3 nailed	21
l3 need	-24
l3 new	26
l3 next	-33
l3 nine	40
l3 ninety	-31
l3 no	34
l3 nobody	-47
l3 nosing	-20
l3 nothing	37
l3 now	-23
l3 of	30
l3 off	-25
l3 oh	29
l3 ok	-22
l3 okay	-17
l3 old	67
l3 one's	-31
l3 ones	-19
l3 only	-43
l3 open	39
l3 ordered	18
l3 other	-16
l3 ought	34
l3 out	-44
l3 outlets	-22
l3 owner	-23
l3 panel	19
l3 paper	-23
l3 pick	31
l3 piece	16
l3 pipe	-19
l3 psi	26
l3 put	-68
l3 r	22
l3 rack	-40
l3 range	-15
l3 red	-23
l3 rental	-27
l3 rip	25
l3 room	39
l3 row	-36
l3 run	84
l3 s	37
l3 screw	15
l3 second	56
l3 see	-54
l3 seven	-24
l3 seventy	22
l3 she	-29
l3 shelf	16
l3 shelves	33
l3 side	37
l3 since	-26
l3 somebody	53
l3 spacing	21
l3 stairs	26
l3 start	-27
l3 still	-49
l3 strip	57
l3 stuck	-31
l3 supposed	18
l3 switch	-21
l3 tap	22
l3 tape	-31
l3 temp	43
l3 ten	-26
l3 test	40
l3 th	-19
l3 that	-22
l3 that's	-15
l3 the	44
l3 their	-17
l3 them	30
l3 there	41
l3 there's	-17
l3 they	-25
l3 they're	-27
l3 thick	65
l3 thinks	-36
l3 thirteen	59
l3 thirty	32
l3 three	-36
l3 thurs	-24
l3 thursday	33
l3 tile	47
l3 time	-15
l3 times	-36
l3 tomorrow	33
l3 too	41
l3 torque	54
l3 truck	32
l3 twelve	29
l3 two	-16
l3 u	-40
l3 unit	40
l3 up	-42
l3 upstairs	28
l3 us	-32
l3 used	21
l3 van	20
l3 vent	35
l3 walk	-18
l3 water	-17
l3 way	-24
l3 week	-33
l3 well	32
l3 went	18
l3 were	23
l3 white	64
l3 wide	29
l3 won't	31
l3 wood	-34
l3 x	45
l3 yard	-30
l3 you	-58
l3. (	27
l3. ,	27
l3. -ed	-20
l3. -ing	26
l3. ;	25
l3. Name	18
l3. letter	30
l3. n't	45
letter head 0	-48
letter head none	-23
more figures 5	-37
more l. word	-47
more r 	-36
more r. #	-36
more words round	-24
of body	24
of cars	29
of food	-33
of kin	-63
of media	-63
of money	-58
of papers	-31
of past	-54
of phones	-66
of roads	-23
of services	39
of so many 0	46
of so many 1	-42
of so many 2	-19
of so many 3	-41
one head none	-113
r of body	-42
r of clock	-63
r of food	-41
r of kin	-127
r of money	-183
r of phones	-22
r of school	-19
r of services	73
r of sport	-56
r1 )	-83
r1 ,	30
r1 -	-96
r1 .	17
r1 10	24
r1 12	43
r1 14	16
r1 2	64
r1 2.4	17
r1 3	-26
r1 30	-18
r1 4	28
r1 5	17
r1 555	-27
r1 :	-134
r1 @	18
r1 a	-62
r1 aa	27
r1 about	-17
r1 above	21
r1 across	32
r1 adds	-40
r1 aff	18
r1 again	-46
r1 agree	-38
r1 along	30
r1 already	-49
r1 amigos	-45
r1 an	-53
r1 anchor	16
r1 anchors	44
r1 angry	-35
r1 apart	65
r1 are	19
r1 area	-32
r1 at	60
r1 b	-46
r1 back	63
r1 banksia	-26
r1 base	21
r1 bath	24
r1 baths	30
r1 batts	-18
r1 bays	-18
r1 bedroom	-52
r1 before	28
r1 below	20
r1 belt	-29
r1 between	42
r1 blades	34
r1 blank	23
r1 blinds	26
r1 block	25
r1 blocks	50
r1 board	44
r1 boards	59
r1 bolts	26
r1 bracket	38
r1 brackets	47
r1 brass	47
r1 brick	34
r1 broken	49
r1 bucks	-121
r1 bulbs	22
r1 business	-34
r1 by	63
r1 c	-33
r1 cabinet	34
r1 call	20
r1 can	-33
r1 centers	42
r1 centres	35
r1 cents	-45
r1 chance	-50
r1 chipped	25
r1 clamps	17
r1 clear	62
r1 clips	42
r1 closed	61
r1 closets	42
r1 code	-17
r1 come	-42
r1 coming	54
r1 corner	55
r1 couplings	26
r1 cracked	59
r1 crew	-49
r1 cut	23
r1 dash	-22
r1 dead	30
r1 deep	92
r1 digits	-30
r1 does	-18
r1 doing	-51
r1 dollar	-62
r1 dollars	-60
r1 done	46
r1 doors	64
r1 double	50
r1 downstairs	19
r1 drip	50
r1 drops	47
r1 eight	-25
r1 elbows	37
r1 elsewhere	21
r1 euro	-99
r1 even	24
r1 every	-16
r1 extra	69
r1 fall	32
r1 filter	20
r1 fingers	-33
r1 first	-16
r1 five	-44
r1 flat	35
r1 floor	21
r1 footings	21
r1 four	-55
r1 fourteen	-19
r1 fourth	-16
r1 full	22
r1 gang	-81
r1 gasket	23
r1 get	-39
r1 gets	-59
r1 go	-77
r1 goes	-41
r1 good	27
r1 got	-28
r1 grille	-42
r1 guys	-87
r1 had	-31
r1 half	17
r1 hall	60
r1 hand	-41
r1 handle	-75
r1 hangers	40
r1 has	-78
r1 hasn't	-16
r1 have	43
r1 he'll	-43
r1 head	33
r1 heads	59
r1 heavy	24
r1 here	44
r1 high	78
r1 hinge	19
r1 hinges	64
r1 hit	-42
r1 hole	-98
r1 homeruns	-24
r1 hooks	58
r1 hot	20
r1 hundreds	-35
r1 hung	30
r1 i	52
r1 i'll	18
r1 i've	-19
r1 if	-32
r1 in	30
r1 inch	16
r1 instead	39
r1 is	-124
r1 ish	-34
r1 it	-21
r1 it'll	-30
r1 joist	18
r1 just	54
r1 k	-75
r1 keys	-18
r1 kinds	-58
r1 knobs	26
r1 larch	-44
r1 last	-57
r1 late	-32
r1 layer	-72
r1 layers	41
r1 lead	26
r1 left	80
r1 leg	-24
r1 lights	47
r1 like	-17
r1 lives	-26
r1 long	54
r1 loose	34
r1 man	-29
r1 maple	-47
r1 max	39
r1 miles	-38
r1 missing	29
r1 moisture	26
r1 more	114
r1 moves	-17
r1 nail	36
r1 need	64
r1 needs	-49
r1 new	70
r1 next	-35
r1 nil	-33
r1 ninety	-34
r1 ninth	-30
r1 nos	35
r1 not	31
r1 nothing	-53
r1 notice	-80
r1 o'clock	-96
r1 oc	63
r1 oclock	-45
r1 off	84
r1 old	-56
r1 openings	26
r1 or	-24
r1 out	-15
r1 outlets	68
r1 outside	17
r1 outta	47
r1 panel	-121
r1 panels	23
r1 part	-56
r1 pascals	22
r1 pavers	50
r1 per	78
r1 pickets	25
r1 piers	28
r1 pipe	20
r1 plate	20
r1 pm	-44
r1 pole	-70
r1 posts	23
r1 potato	-43
r1 pulls	54
r1 put	-26
r1 quarter	-30
r1 quid	-44
r1 rail	43
r1 reads	-45
r1 receps	22
r1 receptacles	40
r1 reducer	29
r1 risers	21
r1 rod	-16
r1 rolled	-18
r1 roof	-17
r1 rooms	19
r1 rough	18
r1 rubber	27
r1 running	38
r1 runs	73
r1 sash	-25
r1 says	-75
r1 sconces	29
r1 score	-26
r1 screens	49
r1 screw	19
r1 screws	68
r1 sec	-23
r1 second	-80
r1 series	-24
r1 shakes	-35
r1 sharp	-49
r1 she	-20
r1 shelves	18
r1 shift	-53
r1 shims	24
r1 short	39
r1 shot	-20
r1 should	45
r1 shows	-32
r1 side	-33
r1 sides	-20
r1 silicone	-22
r1 since	-27
r1 slake	43
r1 slope	20
r1 smoke	47
r1 so	63
r1 south	23
r1 spaces	27
r1 spare	41
r1 square	21
r1 stainless	16
r1 star	-22
r1 stars	-57
r1 starts	-16
r1 still	63
r1 stops	-43
r1 straps	41
r1 stripped	29
r1 stroke	-15
r1 studs	55
r1 supply	20
r1 sure	-34
r1 switch	44
r1 switches	28
r1 tall	22
r1 tapcons	19
r1 ten	37
r1 that	-21
r1 that's	-18
r1 the	-60
r1 then	-38
r1 there	-21
r1 there's	-15
r1 thick	62
r1 thing	-30
r1 things	-80
r1 thirty	30
r1 this	-26
r1 through	-17
r1 tile	52
r1 tiles	36
r1 till	-16
r1 time	-21
r1 times	-149
r1 to	21
r1 toilet	47
r1 toilets	42
r1 tomorrow	-68
r1 tonight	22
r1 top	23
r1 total	44
r1 towel	20
r1 treads	91
r1 trees	25
r1 trim	26
r1 tripped	-39
r1 twelve	-22
r1 two	-57
r1 u	-21
r1 under	29
r1 up	22
r1 used	23
r1 vanities	20
r1 walls	36
r1 wants	-41
r1 was	-75
r1 washers	22
r1 waste	29
r1 wax	26
r1 way	-84
r1 ways	-61
r1 we	-21
r1 wednesday	41
r1 week	-28
r1 weekend	-39
r1 were	21
r1 wet	20
r1 when	17
r1 which	21
r1 while	18
r1 white	27
r1 wide	80
r1 will	27
r1 window	-57
r1 windows	64
r1 won't	25
r1 wood	-20
r1 work	35
r1 wrongs	-49
r1 x	55
r1. 's	56
r1. )	-83
r1. ,	30
r1. -	-96
r1. -ing	25
r1. -s	26
r1. .	17
r1. 1	22
r1. :	-134
r1. @	18
r1. Name	-37
r1. letter	18
r1. n't	28
r1. one	-103
r1. word	27
r2 "	36
r2 (	-36
r2 *	-23
r2 +	21
r2 -	16
r2 .	34
r2 /	-15
r2 00	-19
r2 0142	-25
r2 100	40
r2 12	81
r2 15	23
r2 16	29
r2 2	-45
r2 20	-23
r2 22	21
r2 28	32
r2 30	-20
r2 34	-28
r2 35	19
r2 36	18
r2 40	23
r2 5	-27
r2 7	-41
r2 8	52
r2 :	-87
r2 a	-32
r2 about	-43
r2 also	-51
r2 amp	18
r2 and	32
r2 are	65
r2 ask	46
r2 at	-22
r2 b	-20
r2 back	-41
r2 bags	18
r2 bath	-36
r2 be	65
r2 bedroom	-40
r2 before	-41
r2 behind	25
r2 bent	34
r2 blind	-22
r2 boards	32
r2 bolts	24
r2 bought	44
r2 box	-60
r2 boxes	40
r2 bring	16
r2 but	23
r2 buy	23
r2 by	-40
r2 c	-19
r2 call	-39
r2 can't	-20
r2 cap	43
r2 caulk	47
r2 ceiling	-18
r2 center	64
r2 change	-51
r2 client	-40
r2 clips	22
r2 close	42
r2 closet	-17
r2 coats	47
r2 code	66
r2 coming	-30
r2 concrete	-30
r2 covers	-24
r2 crack	-29
r2 cracked	92
r2 crown	-29
r2 cut	16
r2 day	-29
r2 days	-43
r2 deal	-28
r2 dimmers	17
r2 do	56
r2 don't	-39
r2 done	-45
r2 doors	-21
r2 down	-95
r2 each	66
r2 eighteen	-27
r2 eighty	-40
r2 elbow	-21
r2 em	92
r2 end	23
r2 epoxy	-33
r2 every	24
r2 extra	-16
r2 far	51
r2 fifty	-32
r2 filter	19
r2 filters	29
r2 fine	49
r2 five	-62
r2 floor	-19
r2 footers	26
r2 for	37
r2 forty	20
r2 four	-24
r2 fourteen	39
r2 fridays	-34
r2 front	58
r2 full	23
r2 furnace	-49
r2 gang	-29
r2 glue	-30
r2 go	53
r2 going	-19
r2 good	18
r2 got	43
r2 grade	38
r2 ground	-26
r2 grout	56
r2 half	24
r2 hang	56
r2 hangers	24
r2 he	-49
r2 he'll	16
r2 he's	-29
r2 heads	21
r2 hinges	-42
r2 hole	-23
r2 hour	-54
r2 hung	40
r2 i've	66
r2 if	-23
r2 inch	60
r2 inside	29
r2 it	16
r2 joist	22
r2 kitchen	17
r2 latch	33
r2 laundry	-42
r2 leaking	26
r2 lift	-32
r2 light	15
r2 lime	22
r2 lines	22
r2 ln	-15
r2 lock	-16
r2 low	16
r2 master	18
r2 mate	-38
r2 me	-34
r2 mirror	-20
r2 missing	42
r2 monday	-28
r2 must	-17
r2 night	-65
r2 nine	-39
r2 nineteen	-27
r2 ninety	34
r2 no	-30
r2 noon	-47
r2 not	21
r2 nothing	-39
r2 nuts	49
r2 of	-25
r2 off	-16
r2 oh	-29
r2 ok	19
r2 old	18
r2 on	20
r2 one	-47
r2 ones	35
r2 open	31
r2 or	34
r2 order	-19
r2 outlets	31
r2 over	-29
r2 paint	29
r2 panel	28
r2 paper	-35
r2 patch	35
r2 pick	-17
r2 plaster	37
r2 play	-58
r2 plus	28
r2 pop	-19
r2 pound	19
r2 primer	56
r2 pump	33
r2 quarter	24
r2 r	21
r2 rail	-19
r2 rain	-67
r2 range	-39
r2 right	-16
r2 ring	54
r2 rolls	27
r2 room	-18
r2 run	-19
r2 s	-25
r2 same	26
r2 sand	27
r2 saturday	-36
r2 sent	18
r2 she	19
r2 she's	36
r2 sheets	-20
r2 shelf	25
r2 short	36
r2 showed	-38
r2 shower	-49
r2 shut	-25
r2 side	54
r2 signed	-45
r2 single	44
r2 site	65
r2 six	-40
r2 sixteen	28
r2 skip	-20
r2 slab	18
r2 so	-29
r2 sold	-22
r2 spring	-15
r2 st	-30
r2 start	-32
r2 state	-36
r2 station	19
r2 still	-46
r2 stop	21
r2 street	-15
r2 sunday	-51
r2 swap	42
r2 take	-24
r2 ten	67
r2 tens	25
r2 that	-24
r2 the	52
r2 then	21
r2 there's	-39
r2 these	33
r2 they	-35
r2 they're	40
r2 thing	-56
r2 think	-16
r2 thirteen	22
r2 this	17
r2 those	-36
r2 three	-47
r2 thursday	-34
r2 tiles	17
r2 today	24
r2 told	21
r2 tomorrow	15
r2 top	-40
r2 trips	-17
r2 truck	19
r2 twelve	20
r2 twenty	22
r2 u	-18
r2 unit	-30
r2 upstairs	-34
r2 us	-73
r2 used	29
r2 want	40
r2 wants	-40
r2 was	35
r2 washer	24
r2 way	-28
r2 we're	-22
r2 week	-29
r2 where	-15
r2 will	16
r2 window	-16
r2 windows	-15
r2 with	-20
r2 works	-36
r2 wrong	25
r2 x	53
r2 you're	52
r2. "	36
r2. 's	-26
r2. (	-36
r2. *	-23
r2. +	21
r2. -	16
r2. -ed	16
r2. -ing	32
r2. -s	19
r2. .	34
r2. :	-87
r2. Name	-92
r2. letter	21
r2. n't	-37
r2. one	-53
r2. unit	65
r3 %	39
r3 '	-45
r3 +	15
r3 -	-17
r3 10	-25
r3 12	28
r3 14	-51
r3 24	19
r3 28	-45
r3 3	25
r3 5	61
r3 6	-27
r3 8	35
r3 9	-16
r3 :	-73
r3 ;	-39
r3 a	-41
r3 again	16
r3 air	36
r3 and	45
r3 another	20
r3 app	-21
r3 at	18
r3 back	-19
r3 bad	-72
r3 bag	-16
r3 bar	22
r3 base	-22
r3 bath	30
r3 before	-27
r3 behind	44
r3 black	64
r3 blinds	-17
r3 board	-41
r3 boards	35
r3 bottom	79
r3 box	46
r3 bracket	26
r3 brackets	-18
r3 breakers	17
r3 broken	31
r3 can	32
r3 caps	29
r3 case	27
r3 centre	39
r3 change	-17
r3 chipped	46
r3 clean	25
r3 close	-48
r3 closet	60
r3 cold	17
r3 color	-55
r3 coming	-19
r3 complaining	-19
r3 corner	38
r3 count	50
r3 counter	-16
r3 cover	40
r3 cracked	-49
r3 crew	-83
r3 dead	35
r3 demo	45
r3 done	17
r3 door	63
r3 door's	26
r3 dot	-36
r3 down	34
r3 drain	27
r3 drawer	-20
r3 dry	22
r3 dryer	39
r3 dumpster	-29
r3 each	-24
r3 edge	47
r3 eight	-34
r3 either	-29
r3 eleven	-24
r3 every	-18
r3 falls	-31
r3 family	-17
r3 fault	-24
r3 feet	36
r3 field	33
r3 fifteen	27
r3 filler	-20
r3 find	-16
r3 fine	20
r3 first	-40
r3 fixed	-30
r3 flapper	-38
r3 flashing	43
r3 flat	19
r3 foot	23
r3 for	-50
r3 from	-23
r3 front	17
r3 furnace	-19
r3 gang	47
r3 gap	27
r3 gauge	19
r3 get	-27
r3 gets	31
r3 glass	28
r3 go	27
r3 goes	18
r3 good	-39
r3 got	54
r3 gotta	20
r3 grab	-23
r3 gray	17
r3 grille	-40
r3 guy	-16
r3 guys	-46
r3 hall	17
r3 hangers	33
r3 have	21
r3 he	-30
r3 he's	-76
r3 head	-23
r3 heads	-34
r3 her	30
r3 hinges	-28
r3 hot	33
r3 hours	-16
r3 how	-59
r3 hung	15
r3 i	-20
r3 i'll	-26
r3 i'm	-20
r3 if	-31
r3 in	-33
r3 inch	-25
r3 is	-38
r3 island	-19
r3 it	44
r3 it's	30
r3 kit	15
r3 kitchen	41
r3 knocked	-24
r3 know	18
r3 landing	48
r3 late	-22
r3 lazy	-30
r3 leave	28
r3 left	-26
r3 leg	70
r3 legs	19
r3 length	52
r3 lid	16
r3 lift	-46
r3 like	-40
r3 line	15
r3 long	35
r3 lot	-43
r3 manual	-25
r3 mate	-24
r3 meter	22
r3 middle	65
r3 min	-24
r3 minute	-19
r3 minutes	-20
r3 missing	-48
r3 monday	-22
r3 more	-20
r3 morning	-33
r3 nail	-34
r3 need	37
r3 neutral	34
r3 never	-22
r3 new	-41
r3 nine	-20
r3 no	-28
r3 nobody'll	-30
r3 nose	37
r3 number	23
r3 off	-33
r3 old	-35
r3 on	-20
r3 one	-24
r3 opened	15
r3 order	29
r3 ought	28
r3 out	92
r3 outlets	-18
r3 over	-21
r3 paint	25
r3 panel	37
r3 panels	38
r3 parts	19
r3 pay	-23
r3 people	-17
r3 plate	28
r3 porch	50
r3 punch	-16
r3 quarter	29
r3 radio	-47
r3 ran	52
r3 range	-29
r3 reset	-23
r3 return	-21
r3 right	-42
r3 ring	18
r3 roll	-22
r3 room	-30
r3 run	51
r3 runs	-18
r3 s	20
r3 safe	48
r3 says	32
r3 screens	-35
r3 second	-26
r3 set	19
r3 seven	-24
r3 seventh	-32
r3 seventy	64
r3 short	44
r3 should	16
r3 side	-22
r3 sill	40
r3 sink	18
r3 sister	29
r3 sixteen	38
r3 sixty	29
r3 slope	32
r3 so	-20
r3 socket	15
r3 some	34
r3 stairs	21
r3 steps	28
r3 sticks	-21
r3 still	-30
r3 stone	-28
r3 straps	-24
r3 stripped	25
r3 stud	27
r3 studs	35
r3 sunday	-21
r3 switch	33
r3 tag	-17
r3 take	48
r3 tall	15
r3 tape	45
r3 ten	-53
r3 tens	24
r3 thank	-24
r3 there	-36
r3 thermostat	-39
r3 this	-33
r3 those	24
r3 three	18
r3 through	-56
r3 tile's	37
r3 today	-49
r3 together	-32
r3 told	-61
r3 too	27
r3 towel	20
r3 tread	-48
r3 trim	-23
r3 truck	-38
r3 tub	40
r3 tubes	24
r3 twelve	-25
r3 twenty	50
r3 two	-33
r3 under	-36
r3 up	-16
r3 upstairs	-18
r3 use	46
r3 used	-29
r3 van	28
r3 vent	-22
r3 want	18
r3 was	-20
r3 waste	34
r3 water	-18
r3 way	53
r3 we	49
r3 we're	23
r3 week	-15
r3 where	30
r3 white	-29
r3 window	-18
r3 wire's	38
r3 x	29
r3 yesterday	21
r3. %	39
r3. '	-45
r3. +	15
r3. -	-17
r3. -ed	53
r3. -ing	-31
r3. -ly	-27
r3. 1	18
r3. :	-73
r3. ;	-39
r3. Name	-22
r3. unit	26
r3. word	-24
rule 	-46
rule eachOf	83
rule pair	164
rule quantity/decimal	44
rule quantity/fraction	-25
rule quantity/mixed	61
rule quantity/whole+taken-back	31
rule range	25
size 0	-22
size 1	-22
size 60	24
size 9999	-40
size more	-56
unit 	19
unit head 0	-43
unit head 1	-40
unit head none	-17
unit time	-66
units 0	-61
units 1	58
units 2	29
word head 0	-20
word head 3	59
£ head none	-52
`;
