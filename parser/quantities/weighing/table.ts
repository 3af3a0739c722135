/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 1	85
# head 2	21
$ head none	-119
's head 0	-31
's head none	116
( head none	29
+ head 0	20
+ head 1	21
+ head none	33
, head 0	44
, head 1	20
, head none	23
- head 1	20
- head none	-72
-ed head 0	32
-ed head 1	31
-ed head none	35
-ing head 0	27
-ly head none	74
-s head 0	76
-s head 1	31
-s head 2	-21
-s head none	34
. head 0	34
/ head none	-130
0 l 	-27
0 l. #	-27
0 l. 1	-22
0 l. word	19
0 r 	-34
0 r. #	-34
0 r. word	-19
0 words round	-15
1 figures 1	55
1 head 0	33
1 head none	-87
1 l 
	-23
1 l +	23
1 l ,	76
1 l -	19
1 l .	30
1 l and	60
1 l another	-106
1 l at	49
1 l bath	-51
1 l be	16
1 l bottom	-53
1 l bought	65
1 l bring	65
1 l but	-37
1 l buy	64
1 l by	54
1 l cut	-28
1 l each	-45
1 l every	-107
1 l get	99
1 l good	-35
1 l got	73
1 l grab	47
1 l had	40
1 l hall	43
1 l has	18
1 l have	23
1 l in	32
1 l inch	68
1 l is	-47
1 l just	72
1 l last	-101
1 l left	-59
1 l long	-20
1 l longer	-17
1 l me	37
1 l nd	-37
1 l need	42
1 l new	-99
1 l no	-31
1 l old	-80
1 l one	-18
1 l only	18
1 l order	26
1 l other	-106
1 l plus	53
1 l put	55
1 l reading	28
1 l red	43
1 l right	-43
1 l second	-36
1 l short	67
1 l so	18
1 l square	-45
1 l take	-28
1 l that	-102
1 l that's	-17
1 l the	-169
1 l there's	42
1 l this	-47
1 l type	-34
1 l up	23
1 l want	56
1 l was	41
1 l wrong	-19
1 l. +	23
1 l. ,	76
1 l. -	19
1 l. -ing	-46
1 l. -s	-32
1 l. .	30
1 l. /	-23
1 l. word	-31
1 parts	97
1 r 	35
1 r 
	24
1 r )	-19
1 r -	-31
1 r .	-50
1 r 3	28
1 r 4	17
1 r :	-20
1 r and	-19
1 r at	-40
1 r b	16
1 r before	-26
1 r behind	16
1 r belt	-17
1 r bracket	45
1 r corner	16
1 r cracked	60
1 r door	31
1 r down	-21
1 r eight	16
1 r end	-43
1 r filter	15
1 r for	38
1 r from	-27
1 r gasket	24
1 r get	-26
1 r goes	-28
1 r hand	-41
1 r has	-38
1 r head	28
1 r here	40
1 r hit	-32
1 r i	-32
1 r is	-46
1 r it's	-20
1 r kitchen	25
1 r leg	-34
1 r missing	31
1 r new	53
1 r nine	23
1 r of	-243
1 r off	63
1 r old	20
1 r out	-28
1 r panel	-61
1 r reducer	32
1 r ring	45
1 r sec	-24
1 r seven	19
1 r shelf	-30
1 r shot	-25
1 r side	-23
1 r so	-48
1 r spare	23
1 r they	-19
1 r thing	-23
1 r three	17
1 r time	-19
1 r to	-69
1 r towel	24
1 r two	-24
1 r up	17
1 r was	-26
1 r wax	22
1 r way	-23
1 r wednesday	41
1 r when	24
1 r white	20
1 r with	-30
1 r. #	35
1 r. )	-19
1 r. -	-31
1 r. -ing	40
1 r. -s	-91
1 r. .	-50
1 r. /	24
1 r. 1	87
1 r. :	-20
1 r. one	30
1 r. unit	16
1 r. word	-34
1 words	-66
12 0figures 2	-18
12 figures 1	-32
12 l 	39
12 l 
	-45
12 l .	-15
12 l :	57
12 l about	22
12 l after	-24
12 l all	61
12 l and	31
12 l apartment	-28
12 l around	-32
12 l at	-124
12 l b	-17
12 l back	-20
12 l bay	-26
12 l before	-47
12 l between	-15
12 l bout	45
12 l box	-18
12 l breaker	-41
12 l buy	18
12 l by	24
12 l cat	-17
12 l ch	-25
12 l channel	-30
12 l circuit	-81
12 l cloud	-18
12 l cut	39
12 l detail	-17
12 l door	-20
12 l e	-23
12 l every	52
12 l exit	-23
12 l flat	-30
12 l floor	-39
12 l for	23
12 l four	-19
12 l garage	64
12 l get	16
12 l got	68
12 l grab	34
12 l house	-50
12 l hung	58
12 l is	40
12 l it	69
12 l it's	-58
12 l its	-39
12 l keynote	-25
12 l last	37
12 l least	52
12 l leaves	51
12 l line	-41
12 l lot	-40
12 l maybe	28
12 l need	75
12 l needs	42
12 l nine	-15
12 l not	27
12 l number	-101
12 l number's	-25
12 l on	-21
12 l order	-22
12 l ought	-35
12 l out	32
12 l over	-18
12 l page	-17
12 l past	-57
12 l port	-28
12 l poured	27
12 l pulling	23
12 l ran	69
12 l reading	-35
12 l replaced	18
12 l riser	-49
12 l rm	-26
12 l road	-20
12 l room	17
12 l run	57
12 l saves	-32
12 l sent	27
12 l set	-24
12 l sheet	-19
12 l six	17
12 l so	32
12 l solid	-23
12 l step	-34
12 l table	-26
12 l take	49
12 l that's	-15
12 l the	34
12 l through	-28
12 l til	-30
12 l took	29
12 l tread	-23
12 l truck	-28
12 l unit	-76
12 l up	47
12 l us	48
12 l used	28
12 l we're	44
12 l wire's	22
12 l x	37
12 l zone	-19
12 l. #	39
12 l. 's	20
12 l. -ed	87
12 l. -ing	-25
12 l. .	-15
12 l. /	-45
12 l. :	57
12 l. Name	-44
12 l. one	-36
12 l. unit	-19
12 parts	47
12 r )	-36
12 r -	-17
12 r .	23
12 r 1	-16
12 r :	-55
12 r a	38
12 r anchors	42
12 r angry	-36
12 r at	29
12 r b	-44
12 r boards	25
12 r bucks	-23
12 r by	75
12 r come	-20
12 r dash	-16
12 r dead	38
12 r deep	47
12 r done	44
12 r door	-35
12 r doors	54
12 r down	29
12 r downstairs	21
12 r drops	45
12 r eight	-27
12 r elbows	21
12 r fifty	-19
12 r for	54
12 r forty	-18
12 r gets	-25
12 r got	-24
12 r hangers	41
12 r has	-17
12 r heads	16
12 r here	29
12 r high	19
12 r hinges	22
12 r hole	-57
12 r i	22
12 r if	-15
12 r in	-35
12 r instead	33
12 r is	-30
12 r it	-15
12 r last	-25
12 r left	59
12 r lives	-33
12 r more	44
12 r needs	-49
12 r no	-40
12 r o'clock	-39
12 r of	54
12 r on	28
12 r openings	24
12 r or	-16
12 r out	-75
12 r outlets	20
12 r over	20
12 r panel	-41
12 r pulls	18
12 r says	-20
12 r sharp	-39
12 r short	49
12 r shows	-26
12 r so	51
12 r studs	51
12 r the	17
12 r this	-19
12 r tiles	21
12 r till	-26
12 r times	-37
12 r tomorrow	-34
12 r total	18
12 r wants	-18
12 r was	-33
12 r waste	24
12 r we	-20
12 r when	-25
12 r work	30
12 r x	23
12 r. 's	56
12 r. )	-36
12 r. -	-17
12 r. -ed	32
12 r. -ing	21
12 r. -s	47
12 r. .	23
12 r. :	-55
12 r. Name	-35
12 r. one	-83
12 r. unit	26
12 words	20
12 words round	-28
2 l 	30
2 l 
	-37
2 l (	32
2 l +	22
2 l ,	24
2 l -	-33
2 l .	27
2 l a	-24
2 l about	15
2 l addendum	-17
2 l and	-27
2 l another	32
2 l at	-67
2 l back	40
2 l bath	-45
2 l bay	-62
2 l be	18
2 l bed	-25
2 l bedroom	-73
2 l bought	37
2 l bring	63
2 l buy	46
2 l by	16
2 l coat	-18
2 l count	-28
2 l day	-64
2 l drawer	-35
2 l flat	-45
2 l fourteen	-17
2 l get	33
2 l gets	31
2 l have	39
2 l header's	17
2 l in	-16
2 l it	30
2 l it's	40
2 l maybe	61
2 l need	37
2 l needs	18
2 l number	-58
2 l of	-47
2 l on	23
2 l one	-23
2 l order	29
2 l other	18
2 l phase	-16
2 l press	-20
2 l ran	41
2 l so	31
2 l t	-22
2 l takes	-46
2 l the	78
2 l then	-38
2 l there's	-62
2 l took	26
2 l two	22
2 l type	-21
2 l up	33
2 l us	-31
2 l use	17
2 l used	19
2 l wants	40
2 l with	26
2 l zone	-26
2 l. #	30
2 l. 's	70
2 l. (	32
2 l. +	22
2 l. ,	24
2 l. -	-33
2 l. .	27
2 l. /	-37
2 l. 1	28
2 l. letter	-20
2 l. one	-31
2 l. unit	-58
2 parts	17
2 r ,	-23
2 r -	-30
2 r 3	-21
2 r :	-45
2 r a	-40
2 r and	-49
2 r at	77
2 r can	-50
2 r cents	-29
2 r clamps	16
2 r couplings	25
2 r doors	59
2 r fall	35
2 r five	36
2 r gang	-80
2 r guys	-61
2 r had	-29
2 r half	23
2 r high	31
2 r hinges	25
2 r i	18
2 r in	55
2 r is	-30
2 r left	51
2 r man	-27
2 r more	58
2 r need	29
2 r nil	-33
2 r nos	19
2 r o'clock	-27
2 r of	99
2 r one	-45
2 r out	45
2 r panel	-46
2 r part	-61
2 r pole	-23
2 r screws	35
2 r shakes	-41
2 r short	-25
2 r sides	-29
2 r slope	27
2 r spare	15
2 r starts	-16
2 r supply	16
2 r the	-47
2 r times	-37
2 r to	81
2 r tomorrow	-19
2 r two	19
2 r we	-18
2 r window	-41
2 r windows	41
2 r wrongs	-54
2 r x	-16
2 r. ,	-23
2 r. -	-30
2 r. -ed	-42
2 r. -ly	16
2 r. -s	19
2 r. 1	20
2 r. :	-45
2 r. letter	-16
2 r. n't	38
2 r. one	79
2 r. unit	-18
20 figures 2	23
20 l 	-15
20 l ,	25
20 l .	-29
20 l a	48
20 l all	21
20 l and	23
20 l at	53
20 l counted	19
20 l every	52
20 l exit	-16
20 l for	-64
20 l got	50
20 l house	-37
20 l in	-38
20 l is	54
20 l item	-23
20 l like	-23
20 l lot	-17
20 l maybe	21
20 l me	-32
20 l on	-25
20 l r	-79
20 l read	45
20 l reading	21
20 l says	48
20 l set	44
20 l side	18
20 l so	32
20 l sweet	-28
20 l that's	-34
20 l the	-31
20 l there's	24
20 l to	-18
20 l two	24
20 l under	44
20 l used	29
20 l wants	-25
20 l. #	-15
20 l. ,	25
20 l. -ing	59
20 l. -s	15
20 l. .	-29
20 l. letter	-72
20 l. unit	40
20 l. word	29
20 parts	51
20 r -	-16
20 r .	45
20 r at	32
20 r before	21
20 r bucks	-41
20 r by	39
20 r centers	36
20 r clips	27
20 r down	-68
20 r even	21
20 r for	-23
20 r hung	25
20 r i	28
20 r more	15
20 r ninety	-39
20 r ninth	-26
20 r oc	46
20 r of	43
20 r off	-30
20 r on	20
20 r risers	18
20 r second	-43
20 r the	-20
20 r total	20
20 r treads	27
20 r twelve	-28
20 r twenty	-21
20 r two	-41
20 r we	25
20 r. 's	27
20 r. -	-16
20 r. -s	42
20 r. .	45
20 r. Name	-20
20 r. letter	29
20 r. one	-112
20 r. unit	-17
20 r. word	31
5 l 	43
5 l 
	-58
5 l ,	67
5 l :	16
5 l a	-28
5 l about	-51
5 l after	-34
5 l all	16
5 l and	25
5 l another	34
5 l apt	-31
5 l at	-72
5 l bath	-18
5 l bay	-47
5 l be	59
5 l bed	-39
5 l bedroom	-20
5 l bring	26
5 l by	-39
5 l code	-40
5 l cut	19
5 l day	-50
5 l dock	-25
5 l door	-49
5 l five	-17
5 l flat	-47
5 l for	44
5 l found	23
5 l get	35
5 l gets	22
5 l got	27
5 l had	-18
5 l has	51
5 l have	38
5 l it	41
5 l it's	-22
5 l kitchen	42
5 l lane	-32
5 l last	28
5 l left	36
5 l level	-38
5 l loop	-46
5 l lvl	-42
5 l me	46
5 l mode	-51
5 l need	35
5 l needs	16
5 l no	-20
5 l not	51
5 l number	-50
5 l of	-24
5 l on	-17
5 l only	57
5 l other	79
5 l out	61
5 l over	89
5 l paid	-24
5 l par	-19
5 l put	17
5 l replaced	22
5 l rev	-22
5 l room	-63
5 l says	26
5 l shelf	-34
5 l short	42
5 l slab	16
5 l so	33
5 l step	-17
5 l strike	-20
5 l switch	-36
5 l that	30
5 l that's	20
5 l the	-37
5 l till	-25
5 l truck	-17
5 l twelve	-20
5 l two	-20
5 l type	-18
5 l unit	-55
5 l up	32
5 l us	52
5 l use	19
5 l used	38
5 l wall	23
5 l want	34
5 l wants	40
5 l was	46
5 l with	18
5 l x	19
5 l zone	-59
5 l. #	39
5 l. 's	-19
5 l. ,	67
5 l. -ed	30
5 l. -s	77
5 l. /	-62
5 l. :	16
5 l. Name	-50
5 l. one	-62
5 l. unit	-71
5 r )	-47
5 r -	-38
5 r 2	29
5 r :	-26
5 r aa	24
5 r amigos	-43
5 r are	23
5 r at	21
5 r b	-16
5 r baths	33
5 r batts	-42
5 r blinds	21
5 r brackets	35
5 r bulbs	21
5 r business	-36
5 r but	43
5 r by	-41
5 r came	-29
5 r closets	38
5 r dead	23
5 r digits	-28
5 r doors	-30
5 r extra	62
5 r for	41
5 r four	-42
5 r guys	-36
5 r had	-24
5 r has	-19
5 r hinges	24
5 r hole	-35
5 r hooks	51
5 r in	48
5 r is	-70
5 r layers	41
5 r left	36
5 r lights	27
5 r more	67
5 r nail	32
5 r o'clock	-59
5 r oclock	-28
5 r of	80
5 r on	-26
5 r outlets	44
5 r over	25
5 r per	59
5 r says	-36
5 r screens	51
5 r short	-17
5 r should	24
5 r spaces	28
5 r stars	-60
5 r still	63
5 r the	-84
5 r they	16
5 r things	-51
5 r three	19
5 r tile	35
5 r times	-81
5 r to	22
5 r today	-31
5 r tomorrow	-38
5 r tripped	-25
5 r way	-69
5 r went	32
5 r will	29
5 r windows	25
5 r with	-20
5 r won't	24
5 r x	31
5 r. 's	-19
5 r. )	-47
5 r. -	-38
5 r. -ed	21
5 r. -ing	17
5 r. -s	46
5 r. :	-26
5 r. one	-28
5 r. unit	21
60 l 	-21
60 l $	-41
60 l ,	-21
60 l -	-65
60 l :	16
60 l a	38
60 l about	-20
60 l are	22
60 l at	97
60 l breaker	-22
60 l by	35
60 l catch	-16
60 l cut	34
60 l error	-36
60 l for	16
60 l from	36
60 l got	28
60 l he's	-72
60 l house	78
60 l in	-38
60 l is	68
60 l it	-39
60 l lot	-25
60 l maybe	-27
60 l me	18
60 l need	25
60 l needs	19
60 l net	-38
60 l not	54
60 l number	-69
60 l off	-30
60 l ordered	22
60 l plate	39
60 l po	-17
60 l r	-20
60 l reading	23
60 l said	-19
60 l say	35
60 l says	36
60 l side	23
60 l so	16
60 l through	37
60 l to	48
60 l up	-66
60 l wall	18
60 l want	18
60 l wants	46
60 l was	37
60 l with	17
60 l x	37
60 l. #	-21
60 l. $	-41
60 l. 's	35
60 l. ,	-21
60 l. -	-65
60 l. -ing	53
60 l. -ly	23
60 l. 1	-25
60 l. :	16
60 l. one	-46
60 l. unit	35
60 l. word	40
60 r .	39
60 r :	-19
60 r all	42
60 r at	43
60 r blocks	32
60 r boards	23
60 r brick	21
60 r bucks	-42
60 r card	-21
60 r chance	-39
60 r dollars	-41
60 r down	72
60 r fifty	-35
60 r for	-17
60 r from	-25
60 r high	38
60 r i	22
60 r if	-21
60 r miles	-35
60 r not	35
60 r oc	22
60 r of	41
60 r on	-54
60 r or	-41
60 r pavers	31
60 r pulls	20
60 r so	32
60 r that	18
60 r the	-17
60 r then	21
60 r they	15
60 r thick	25
60 r to	-47
60 r up	18
60 r wide	36
60 r x	21
60 r. 's	17
60 r. -s	-15
60 r. .	39
60 r. /	40
60 r. 1	-18
60 r. :	-19
60 r. letter	24
60 r. one	-85
60 r. unit	23
60 r. word	46
60 words	21
99 figures 2	34
99 l 	-20
99 l $	-50
99 l -	22
99 l a	-34
99 l an	-60
99 l and	19
99 l at	64
99 l by	19
99 l doing	-17
99 l for	-50
99 l got	-40
99 l humidity's	30
99 l is	-29
99 l of	-42
99 l only	27
99 l over	-27
99 l past	45
99 l reading	21
99 l reads	17
99 l return	23
99 l says	-41
99 l that	-37
99 l to	40
99 l under	34
99 l was	48
99 l wide	18
99 l. #	-20
99 l. $	-50
99 l. 's	18
99 l. -	22
99 l. -ing	32
99 l. -ly	49
99 l. -s	-24
99 l. one	-39
99 l. unit	-23
99 l. word	25
99 parts	-52
99 r ,	56
99 r -	30
99 r bucks	-23
99 r by	22
99 r for	-27
99 r is	-24
99 r next	-43
99 r of	43
99 r on	23
99 r or	32
99 r out	41
99 r so	39
99 r to	-20
99 r. ,	56
99 r. -	30
99 r. -ed	-30
99 r. -s	-53
99 r. word	15
99 words	20
999 0figures 4	-57
999 l 	-29
999 l $	-39
999 l ,	-30
999 l -	-28
999 l .	23
999 l 555	-18
999 l a	-41
999 l about	60
999 l and	75
999 l at	45
999 l be	24
999 l door	-15
999 l for	20
999 l from	32
999 l going	41
999 l in	-41
999 l it	-42
999 l it's	15
999 l laid	40
999 l lot	-16
999 l me	-21
999 l no	34
999 l of	-21
999 l on	-18
999 l out	40
999 l reading	22
999 l reads	31
999 l rise	35
999 l rm	-43
999 l room	-40
999 l section	-32
999 l set	27
999 l side's	31
999 l suite	-29
999 l that's	28
999 l the	-69
999 l there	-43
999 l there's	24
999 l to	52
999 l two	39
999 l was	-29
999 l x	-16
999 l. #	-30
999 l. $	-39
999 l. 's	42
999 l. ,	-30
999 l. -	-28
999 l. -ing	38
999 l. -s	82
999 l. .	23
999 l. 1	-49
999 l. one	16
999 l. unit	-23
999 oh	-40
999 r ,	28
999 r -	-55
999 r .	34
999 r 555	-27
999 r :	-24
999 r a	-58
999 r across	23
999 r agree	-40
999 r already	-24
999 r and	21
999 r area	-42
999 r at	-17
999 r before	-18
999 r bucks	-28
999 r centres	26
999 r crew	-21
999 r deep	21
999 r down	25
999 r for	-58
999 r going	69
999 r high	58
999 r i	17
999 r not	28
999 r number	-22
999 r of	73
999 r off	47
999 r on	15
999 r one	29
999 r over	-60
999 r pickets	16
999 r screws	43
999 r so	18
999 r the	33
999 r to	55
999 r two	-20
999 r when	-23
999 r wide	17
999 r x	24
999 r. 's	16
999 r. ,	28
999 r. -	-55
999 r. -s	22
999 r. .	34
999 r. 1	-59
999 r. :	-24
999 r. letter	35
999 r. unit	-68
999 r. word	19
999 swallowed	-18
999 swallowed round	-24
999 words	79
999 words round	32
9999 figures 4	-49
9999 figures 5	-21
9999 l 	-26
9999 l ,	-32
9999 l at	110
9999 l for	-24
9999 l from	-45
9999 l in	-22
9999 l is	-27
9999 l switch	-25
9999 l the	-16
9999 l to	19
9999 l. #	-26
9999 l. 's	62
9999 l. ,	-32
9999 l. unit	-19
9999 r 	-17
9999 r ,	16
9999 r in	-24
9999 r long	44
9999 r so	22
9999 r the	19
9999 r to	36
9999 r. #	-20
9999 r. ,	16
9999 r. unit	-27
9999 r. word	-24
9999 words	-26
9999 words round	23
: head 0	41
: head 1	27
: head none	37
< head none	21
Name head none	-107
a a	-35
a aa	31
a about	-61
a across	26
a adds	-45
a aff	19
a again	-16
a agree	-40
a ain't	40
a alder	-23
a alive	19
a all	-48
a along	43
a also	48
a am	-19
a amigos	-43
a an	-39
a anchor	18
a anchors	53
a and	39
a angry	-36
a another	-38
a anything	36
a apart	63
a app	-27
a are	54
a area	-19
a as	-36
a ask	-28
a at	29
a away	-49
a b	-45
a baby	-21
a back	66
a backs	-41
a bad	31
a bag	21
a bags	15
a balusters	-21
a banksia	-29
a bar	23
a bars	40
a base	39
a bases	-25
a bath	41
a bathroom	-62
a baths	44
a batts	-27
a bay	-35
a be	40
a bead	21
a beam	25
a bedroom	-27
a behind	50
a below	29
a bin	27
a birch	-43
a bit	22
a black	63
a blades	30
a blank	21
a blind	-20
a block	16
a blocks	78
a blue	-36
a boards	72
a bolt	43
a bolts	52
a boots	-22
a both	18
a bottom	61
a bought	59
a box	19
a boxes	22
a bracket	47
a brackets	44
a brass	73
a brick	31
a broke	-20
a broken	45
a brown	15
a brushes	23
a bucks	-68
a buddy	-22
a built	-46
a bulbs	38
a bumpers	32
a buried	16
a burned	48
a bushing	28
a business	-53
a but	62
a buzzer	-49
a buzzes	-21
a by	31
a c	-35
a cabinets	-16
a cable	-44
a call	-22
a calling	-39
a came	36
a can	64
a can't	-36
a cans	42
a cap	41
a caps	22
a card	-22
a carton	-30
a case	36
a casing	37
a caulk	43
a ceiling	22
a center	72
a centers	63
a centre	38
a centres	31
a cents	-43
a chance	-58
a change	-25
a changed	16
a check	15
a chimney	54
a chipped	69
a circuit	25
a clamps	44
a clean	18
a clear	76
a client	-25
a clips	77
a closed	56
a closet	45
a closets	26
a coat	-43
a coats	-30
a code	70
a coffee	34
a coil	34
a cold	23
a color	-29
a colour	-20
a come	-31
a comes	-32
a coming	49
a complaining	-22
a complete	-35
a concrete	-33
a contact	20
a cord	-22
a corner	52
a cost	-23
a could	-32
a count	47
a counter	-27
a countertop	-18
a couplings	40
a court	-19
a cove	17
a cover	28
a covers	20
a crack	-22
a cracked	79
a crew	-94
a damaged	36
a dash	-28
a day	-74
a days	-75
a dead	45
a deal	-39
a decks	20
a deep	107
a degree	23
a degrees	-29
a den	27
a dentists	-87
a digits	-28
a dining	-16
a disposal	-54
a does	-25
a dollar	-60
a dollars	-63
a done	-26
a dont	-21
a door's	29
a doors	38
a dot	-31
a down	-18
a downstairs	21
a dozen	-85
a drawer	-31
a drip	67
a driveway	-28
a drop	33
a drops	58
a dry	16
a dryer	-26
a dumpster	-24
a each	55
a easy	-33
a edge	48
a eggshell	52
a eighteen	29
a eights	31
a eighty	-33
a either	-27
a elbows	71
a eleventh	-34
a elm	-37
a elsewhere	38
a em	94
a empty	-24
a end	32
a ends	56
a enough	30
a euro	-93
a even	47
a every	18
a everybody	-79
a everywhere	-39
a except	33
a excuses	-34
a exit	-17
a expansion	28
a extra	33
a faced	-27
a factory	25
a fall	31
a falls	-28
a fan	18
a far	71
a faucet	-30
a fault	-47
a fella	-22
a fence	22
a field	31
a fifteens	21
a fifty	27
a filter	35
a find	-44
a fine	27
a fingers	-36
a finish	-27
a finished	21
a first	17
a fit	28
a fix	-67
a fixed	-27
a flapper	-51
a flashing	45
a flat	49
a flex	-40
a flicker	35
a flush	-23
a foam	-32
a foot	75
a footer	19
a footers	57
a footings	25
a for	36
a forget	-20
a forgets	-20
a forty	16
a fours	21
a fourteen	27
a framed	-48
a friday	30
a fridays	-38
a front	30
a frost	-29
a ft	-37
a full	41
a furnace	-49
a g	17
a gal	15
a gallon	-36
a game	-30
a gang	-62
a garage	38
a gary	27
a gasket	34
a gauge	42
a get	-51
a gets	-36
a gfcis	35
a give	68
a glass	44
a glue	-18
a glued	-22
a go	33
a gone	-34
a gonna	26
a good	57
a gotta	-23
a grade	57
a grate	-37
a green	15
a grille	-75
a grit	23
a ground	-33
a grout	48
a gun	-31
a guy	-48
a guys	-89
a half	30
a hall	127
a hand	-32
a handle	-89
a hanger	-15
a hangers	101
a hanging	17
a happy	37
a has	-96
a hatch	-20
a have	28
a he	-56
a he's	-79
a head	-59
a headed	-21
a heads	52
a heater	29
a heavy	23
a held	-26
a hes	-29
a high	69
a him	-63
a hinge	27
a hire	-31
a his	-25
a hit	-61
a holding	19
a hole	-83
a hollow	-19
a hooks	34
a hose	21
a hour	-25
a hours	-30
a house	49
a how	-23
a hums	-48
a hundreds	-32
a hydro	-39
a i	-47
a i'm	-18
a i've	23
a ice	-21
a if	-37
a in	24
a inch	35
a inches	39
a inside	-24
a instead	46
a into	24
a iron	-39
a is	-49
a ish	-42
a island	-32
a it	-33
a it'd	-15
a it'll	-25
a it's	-47
a jacks	21
a job	-48
a joist	28
a june	-15
a keeps	-20
a key	-52
a kid	-21
a kids	-23
a killed	-27
a kinds	-60
a kit	50
a kitchen	35
a knobs	40
a knocked	-18
a label	21
a labeled	34
a ladder	-16
a ladders	22
a laid	42
a lamp	27
a landing	57
a laptop	-21
a larch	-39
a laser	53
a last	-29
a latch	21
a late	-49
a latest	-59
a lavs	27
a lay	35
a layer	-81
a layers	41
a lazy	-24
a leaking	16
a leaks	-16
a leaves	18
a left	61
a leg	66
a legs	60
a length	29
a level	-26
a lever	22
a lid	42
a lift	-63
a light	30
a lights	28
a like	-72
a lime	22
a live	22
a lives	-33
a ln	-17
a lol	-20
a long	120
a longer	21
a look	-39
a loose	16
a lot	-67
a lower	16
a lunch	-17
a m10	17
a mailbox	-27
a make	-34
a man	-25
a manifold	22
a manual	-28
a maple	-50
a march	-19
a mate	-56
a matt	39
a max	52
a men	-41
a metal	-40
a meter	50
a middle	76
a miles	-35
a mill	-30
a minimum	29
a minute	-52
a moisture	26
a monday	-34
a more	75
a morning	-55
a mosaic	23
a move	39
a moved	-68
a moves	-38
a muppet	-33
a must	-17
a n	23
a nails	54
a need	36
a needs	-46
a new	20
a next	-40
a night	-64
a nil	-33
a nine	-61
a ninety	25
a ninth	-17
a no	-24
a nobody	31
a nobody's	-17
a noon	-44
a north	34
a nos	33
a nose	42
a not	-27
a nothing	-42
a now	15
a nuts	44
a o	-15
a o'clock	-82
a oc	65
a oclock	-40
a off	27
a office	-22
a offset	-35
a oh	-32
a ok	-30
a old	38
a ones	16
a open	19
a opened	22
a opening	59
a openings	24
a order	51
a ordered	31
a other	-63
a ought	30
a out	-19
a outlets	74
a outside	-34
a oven	21
a owner	17
a packers	-67
a paint	23
a painters	-16
a palings	20
a pan	27
a panel	-67
a panel's	-15
a panels	51
a paper	-25
a park	-32
a part	-61
a parts	22
a pascals	26
a pass	-26
a passed	-19
a past	-60
a pattern	-54
a pavers	48
a pendants	47
a people	-21
a per	83
a permit	-15
a pickets	22
a pieces	19
a piers	24
a pinched	-31
a pine	46
a pipe	33
a place	-41
a planks	16
a plaster	24
a plate	41
a plates	56
a play	-51
a plenty	55
a plumb	-15
a plumber	-20
a plywood	32
a pm	-38
a pocket	17
a podium	-69
a point	-22
a points	16
a pole	-47
a pop	-26
a porch	23
a post	30
a potato	-53
a pound	-19
a primer	45
a proud	23
a pull	22
a pulled	-22
a pulls	50
a punch	-17
a punched	-17
a put	-23
a quid	-47
a quiet	-34
a quit	-32
a rack	18
a radiator	19
a radio	-89
a rafters	51
a rail	32
a rain	-32
a raise	46
a ran	23
a rang	-32
a range	-47
a reads	-17
a ready	-51
a rear	-25
a receps	19
a receptacle	23
a receptacles	43
a reducer	60
a remain	21
a replaced	-17
a required	-15
a reset	-23
a return's	25
a ridge	25
a right	-24
a ring	31
a rise	22
a riser	29
a risers	41
a rm	17
a rolled	-17
a roller	19
a roof	-22
a room	32
a rubber	28
a run	23
a running	62
a safe	50
a sags	-26
a said	-64
a sand	30
a satin	35
a says	-54
a school	-21
a sconces	34
a score	-27
a scratched	24
a screen	32
a screens	54
a screwed	25
a screws	63
a sealed	28
a sec	-24
a second	-63
a send	-28
a series	-17
a seventeen	-19
a seventh	-39
a seventy	58
a shakes	-35
a sharp	-53
a she	24
a she's	-32
a shed	40
a sheets	43
a shelf	45
a shift	-69
a shims	30
a short	94
a should	29
a show	-15
a showed	-38
a shower	-34
a shows	-17
a shut	-33
a side	18
a signed	-42
a silicone	-24
a sill	33
a since	-15
a sink	44
a sister	27
a site	30
a six	24
a sixes	-32
a sixteen	71
a sixteenth	-15
a sixteenths	-28
a skip	-26
a slab	36
a slabs	-18
a slats	-32
a slope	85
a slow	-56
a smoke	16
a so	36
a sockets	-17
a some	33
a something	-36
a sorry	-30
a sound	-21
a south	20
a space	41
a spacer	-16
a spacers	20
a spaces	28
a spare	32
a spares	18
a spot	21
a spout	29
a spring	-54
a square	-40
a squeaks	39
a st	-32
a stainless	24
a star	-20
a stars	-60
a start	-33
a starts	-21
a state	-37
a station	21
a stay	-19
a step	-44
a stick	26
a still	-26
a stock	31
a stone	-30
a stool	-41
a stopper	21
a stops	-38
a story	-28
a straight	-37
a straps	19
a strike	26
a stripped	19
a stroke	-21
a stuck	-23
a stud	32
a studs	108
a style	19
a suction	27
a sunday	-65
a supplier	-21
a supply	34
a sure	-25
a sweep	36
a switch	60
a switches	19
a tag	-25
a take	35
a takes	18
a tall	38
a tap	48
a tape	42
a tee	34
a template	-32
a tens	23
a thank	-22
a that's	-23
a their	-20
a them	16
a then	-43
a there's	-27
a theres	28
a these	33
a they	-51
a they're	56
a thick	48
a thing	-78
a things	-84
a think	-25
a those	-33
a thousand	-49
a thumb	-23
a thursday	-24
a tied	-19
a ties	-33
a tight	-16
a tile	62
a tile's	44
a tiles	57
a times	-150
a to	22
a toe	-24
a together	-71
a toggles	28
a toilet	47
a toilets	35
a tonight	23
a too	-46
a took	-18
a top	15
a total	53
a touch	-29
a toward	24
a towel	39
a traps	28
a travelers	-24
a tray	-27
a tread	-45
a treads	51
a treated	-19
a trees	21
a trip	19
a tripped	-31
a trips	-19
a truck	26
a tub	42
a tube	68
a tuesday	-46
a turned	-40
a twelves	33
a twenty	28
a twisted	18
a two	24
a twos	38
a type	22
a u	-34
a unit	-32
a unless	-26
a until	45
a up	29
a upper	17
a uppers	17
a us	-79
a usb	16
a use	21
a used	61
a v	-30
a valve	32
a van	41
a vanities	20
a vanity	-25
a vent	15
a vinyl	36
a volt	28
a wafers	18
a wall	81
a walls	29
a want	34
a wanted	18
a was	-31
a washer	-16
a washers	26
a waste	67
a watch	-17
a water	-71
a watt	42
a way	-73
a ways	-66
a wear	-17
a wednesday	30
a week	-30
a weekend	28
a wet	-24
a what	30
a whatever	-39
a when	-15
a which	38
a while	18
a white	24
a who	-32
a whole	-27
a wide	50
a will	52
a window	-40
a windows	24
a wiped	-28
a wire	-17
a wire's	41
a wood	-19
a word	-51
a work	35
a works	-40
a would	-41
a wouldn't	-92
a wrong	-21
a wrongs	-54
a x	65
a yard	-79
a yet	-53
a you	-36
a you're	55
a zero	-20
a zip	-59
b a	-34
b about	16
b above	38
b absent	-71
b ac	30
b across	20
b actually	23
b add	97
b addendum	-17
b address	-29
b adds	29
b adhesive	38
b against	26
b air	28
b aisle	-41
b alarm's	-21
b all	16
b allow	84
b already	22
b alright	-32
b amp	97
b amps	99
b an	-38
b anchors	28
b and	27
b another	-32
b anti	23
b any	27
b anything	34
b apart	65
b apartment	-52
b apiece	30
b appliance	18
b apt	-44
b aquastat	45
b architect	50
b are	51
b arm	-22
b around	-28
b arrived	45
b arsenal	-28
b ask	-18
b asked	49
b at	17
b attic	-27
b b	-62
b badge	-19
b bags	16
b bakery	-20
b balusters	18
b bar	52
b basement	-59
b bath's	19
b bay	-43
b bays	-81
b bead	18
b beam	-27
b bearing	-34
b beat	-26
b because	17
b bed	-62
b bedroom	-56
b bedrooms	-31
b belts	27
b bench	53
b bent	34
b better	36
b between	-51
b big	-62
b billed	-49
b bin	-48
b birdied	-52
b bit	-22
b black	28
b bldg	-36
b blew	28
b blinds	34
b blood	-92
b blower	47
b boards	37
b bolted	20
b bolts	64
b booked	-51
b boss	-52
b both	-54
b bought	57
b bout	45
b box	-21
b boxes	41
b boy	-19
b bracket	21
b brackets	49
b break	-46
b breaker	-41
b breaker's	64
b breakers	50
b brick	16
b bring	126
b bringing	40
b broke	61
b brought	76
b brushed	-16
b buckets	30
b bucks	16
b building	-42
b built	-24
b bulb	26
b bumpers	42
b bunnings	-47
b burned	35
b bus	-15
b busted	-42
b but	33
b buy	82
b c	-23
b cable	27
b call	40
b calls	52
b cam	-64
b came	77
b camera	-42
b can	16
b cans	35
b cap	17
b card	30
b carpet	-36
b carton	26
b casing	-34
b cat	-18
b catch	-20
b cats	-26
b caulk	-31
b cbd	21
b cell	-26
b center	39
b centres	22
b cfm	64
b ch	-60
b changed	59
b channel	-73
b chapter	-21
b charge	-49
b charged	-59
b chelsea	-22
b chimney	-29
b circuit	-72
b class	-44
b cleaned	24
b clearance	15
b clips	28
b close	19
b closer	35
b closes	-43
b closet	-15
b cloud	-18
b co	29
b coat	-37
b code's	-63
b cold	43
b collar	50
b colour	-29
b column	-29
b coming	-21
b confirmation	-31
b control	45
b copper	23
b corner	52
b cost	-16
b counted	-22
b counter	-47
b counter's	25
b county	-43
b cover	36
b cracked	47
b crane's	-34
b crew	-15
b crowned	50
b cut	106
b cylinder	33
b damper	27
b dash	-38
b day	-82
b days	-24
b dead	30
b deck	37
b deep	31
b degrees	28
b delivered	18
b den	67
b desk	-60
b detail	-31
b diagonals	72
b dialed	21
b didn't	-29
b dining	-30
b dip	-25
b display	-58
b do	-73
b dock	-25
b doing	-69
b don't	-45
b done	21
b door	-53
b doors	-21
b double	-33
b down	48
b downspouts	17
b downstairs	34
b dozen	-26
b drain	25
b draw	41
b drawer	-51
b drawing	47
b draws	21
b drew	-30
b drop	56
b drops	34
b drove	26
b dry	53
b dryer	-19
b drywall	-53
b drywall's	34
b duct	18
b duct's	18
b dwg	-32
b e	-26
b each	69
b east	-22
b edge	37
b egress	-34
b eight	30
b eighteen	46
b eighth	15
b eighths	66
b eighty	-42
b elbows	28
b electrician	-35
b elevation	-19
b elevator	-54
b end	35
b ends	-34
b engine	-21
b entry	-25
b episode	-24
b epoxy	-54
b error	-44
b exam	-35
b except	24
b exit	-45
b expires	-100
b extension	-24
b exterior	-44
b failed	-20
b fall's	16
b falls	-30
b far	40
b fault	-17
b feeder	-22
b feeder's	-33
b feeds	-22
b feet	39
b fell	58
b field	-33
b fifteen	34
b fifty	54
b figure	20
b figured	-15
b fill	-16
b final	-25
b fire	18
b fit	-57
b fitted	-17
b fix	-45
b flange	28
b flashes	-84
b flat	-42
b flight	-55
b floor	-19
b floor's	15
b flue	46
b footers	43
b footing	17
b footing's	44
b footy's	-18
b formula	-31
b forty	28
b found	45
b four	55
b fourteen	16
b fourth	-51
b frame	-16
b framed	26
b framing	-17
b fridge	23
b front	37
b full	20
b g	-33
b gallon	31
b gallons	26
b game	-24
b gang	-16
b gap	51
b gap's	23
b garage	71
b gas	-23
b gasket	20
b gaskets	20
b gate	-41
b gate's	-19
b gauge	27
b gauged	33
b generator	80
b get	62
b gets	57
b getting	23
b give	-28
b gives	-31
b glass	16
b glue	57
b glued	18
b go	26
b goal	-43
b going	-16
b gone	29
b good	19
b got	31
b gr	38
b grab	53
b gray	-23
b great	-20
b green	-47
b grid	29
b grout's	61
b guide	-16
b guys	-37
b had	30
b half	43
b hall	45
b hallway	31
b handrail's	39
b hang	20
b hangers	51
b hard	30
b hardware	-38
b has	57
b hatch	-34
b have	53
b he	-104
b he'll	-33
b he's	-134
b head	62
b header	36
b header's	38
b headroom's	49
b heads	16
b hearth	24
b heater's	34
b heavy	-16
b held	19
b her	-33
b here	-32
b hes	-69
b high	53
b highway	-24
b him	-86
b hinge	31
b hinges	-46
b his	-91
b hit	-26
b hits	35
b hole's	54
b holes	17
b holiday	-21
b home	-20
b homeruns	-27
b hood	33
b hooks	35
b hour	-56
b hours	-78
b how	25
b humidity	75
b humidity's	39
b hundred	45
b hung	70
b hwy	-78
b i'd	31
b i've	27
b if	47
b im	-25
b in	-28
b inch	47
b inside	32
b inspector	-38
b install	-34
b instead	25
b into	19
b invoice	-51
b island	61
b it'll	33
b it's	-18
b item	-43
b items	-51
b its	19
b itself	-21
b jan	26
b job	-56
b joint	-18
b joists	52
b jumper	-69
b just	94
b k	-37
b keep	25
b kept	-23
b key	-61
b keyed	-56
b keynote	-25
b kick	32
b kicks	89
b kid	-45
b kid's	-24
b kids	73
b kind	47
b kit	16
b kitchen	50
b kits	39
b knife	-16
b knock	-30
b l	25
b l1	25
b l2	16
b label	20
b lady	-16
b lags	23
b laid	58
b landing	36
b lands	-27
b lane	-32
b lap	87
b last	35
b lb	34
b least	67
b leaves	70
b led	34
b left	49
b leg	84
b lengths	28
b less	32
b level	-92
b light	-17
b light's	-16
b lights	44
b line	-24
b linen	16
b little	-38
b live	26
b living	-26
b load	49
b lobby	23
b local	-35
b lock	19
b lockbox	-29
b log	-37
b longer	-17
b look	-32
b loop	-44
b loose	36
b lot	-105
b lounge	54
b low	36
b lvl	-37
b m	-54
b made	-55
b make	62
b man	-39
b marble	43
b margin's	-30
b mark	-54
b marked	-49
b marker	-20
b married	-17
b mate	-16
b materials	-73
b max	38
b maximum	48
b maybe	25
b mc	30
b me	20
b measure	-21
b measures	-17
b medallion	22
b medium	61
b meeting	-36
b meter	82
b metered	41
b metres	33
b mike	-21
b mile	-26
b million	-44
b mine	-30
b minus	16
b minute	36
b minutes	-18
b mirror	34
b mirror's	36
b missing	52
b mm	39
b mode	-51
b moisture	82
b moisture's	52
b mold	21
b mon	-62
b moon	-37
b more	29
b morning	15
b mortar	19
b mounted	16
b move	47
b moved	-75
b mrs	-44
b mud	-31
b must	31
b my	-83
b nah	-18
b nail	22
b nailed	34
b nails	50
b nd	-16
b near	-30
b need	100
b needs	80
b net	-42
b never	16
b next	-41
b nfpa	-16
b niche	17
b nineteen	-29
b ninety	48
b no	57
b nobody	-43
b none	34
b north	38
b not	16
b note	-32
b nothing	39
b now	64
b number	-194
b number's	-74
b nursery	17
b nuts	18
b oak	20
b odds	-32
b of	57
b off	-19
b office	-28
b offset	29
b oh	-37
b ohm	42
b ohms	51
b oil	-38
b okay	-65
b old	-51
b only	87
b opened	17
b opening	44
b opening's	44
b opens	-39
b option	-18
b or	-23
b order	34
b ordered	66
b other	-19
b oughta	29
b our	-56
b oven	30
b owes	-17
b p	-45
b pack	-59
b packed	37
b packs	63
b pad	39
b page	-53
b paid	-45
b paint	-27
b painted	-55
b panel's	33
b paper	-50
b par	-40
b parked	-29
b part	-59
b passed	-30
b patch	42
b pavers	26
b pay	-39
b pcs	-40
b per	-18
b permit	-21
b pete	-28
b phase	-39
b photo	-24
b pick	65
b pickets	104
b picture	-19
b pieces	49
b pier	-44
b pin	-86
b pipe	53
b pitch	32
b place	-39
b plans	57
b plant	49
b plaster	32
b plastic	-30
b plates	20
b play	-25
b please	68
b plot	-49
b plug	20
b plumb	19
b plus	63
b ply	16
b po	-42
b point	39
b pole	-48
b poly	-27
b popped	-50
b port	-25
b pounds	17
b pour	-44
b poured	32
b premium	-21
b press	-23
b pressure	17
b primer	20
b prob	-30
b psalm	-38
b psi	39
b pu	25
b pull	32
b pulled	-60
b pulling	53
b pulls	36
b pump	-25
b pumped	59
b put	71
b pvc	20
b qt	19
b qty	56
b quarter	-33
b quoted	-63
b r	-44
b rack	-64
b rafters	64
b rail	22
b rail's	20
b rain	23
b raise	66
b ran	32
b range	46
b rapid	-46
b rate's	-29
b rated	42
b ratio's	57
b ray	-18
b rcbo	19
b re	-41
b read	63
b reading	61
b reads	90
b real	30
b receptacles	20
b red	-33
b ref	-19
b register's	39
b relief	48
b rental	-63
b replace	83
b replaced	22
b report	-51
b reset	19
b rest	19
b return	70
b return's	32
b reveal's	19
b rfi	-24
b rh	46
b right	-39
b rip	37
b ripped	22
b rise	59
b riser	-33
b rm	-80
b road	-21
b rock	42
b rod	16
b rolled	-49
b rolls	-32
b roof	-24
b rooftop	-16
b room	-34
b rough	21
b roughed	34
b round	-36
b route	-15
b row	-55
b rtu	-71
b rubber	-25
b rule	20
b run	28
b running	32
b runs	-15
b s	17
b sags	39
b same	-35
b sand	-52
b saturday	-43
b saves	-32
b saw	-27
b say	33
b saying	35
b says	17
b scale	-75
b sch	-62
b screen	19
b screwed	36
b screws	48
b seal	-32
b seat	41
b sec	-39
b second	17
b section	-46
b see	-20
b send	-51
b sent	56
b serial's	-26
b served	-34
b set	122
b sets	-39
b setting	-36
b seventeen	16
b seventy	69
b she	-62
b she'll	-67
b she's	-89
b shear	16
b sheathing	20
b sheet	-52
b sheets	20
b shelf	21
b shelves	44
b shelving	-52
b shift	-21
b shim	35
b shld	19
b shop	-18
b short	135
b shorted	76
b shot	-18
b should	84
b should've	68
b shout	-15
b shower	-36
b shows	52
b side	43
b side's	37
b sill	61
b sill's	41
b since	-67
b sister	67
b site	-54
b six	45
b sixteen	43
b sixty	60
b slab	50
b slab's	62
b slump	83
b smoke	15
b smoko	-29
b snag	-15
b snapped	-18
b snow	18
b so	40
b sockets	23
b sold	48
b solid	-18
b some	21
b somebody	63
b something	-39
b sometime	-61
b somewhere	82
b sorry	27
b space	19
b spaced	38
b spacing	65
b span's	21
b spare	36
b spec	88
b split	17
b spot	-29
b spring's	-33
b spurs	-35
b sq	19
b square	26
b squares	26
b squeak	42
b stage	-43
b stain	-18
b stainless	32
b stair	-44
b standing	29
b start	-37
b starts	-21
b stat	28
b state	-22
b static	44
b static's	31
b station	-17
b step	-24
b step's	69
b still	23
b stitch	-32
b stock	41
b stone	46
b stops	21
b stringer	17
b strip	-21
b strips	29
b stub	45
b stuck	40
b stud	19
b studio	-27
b studs	76
b stuff	66
b style	16
b sub	-28
b subcool	37
b subcool's	20
b subfloor	58
b subfloor's	20
b suite	-37
b summer	-38
b superheat	41
b superheat's	40
b supply	45
b swap	44
b swapped	26
b sweet	-28
b swing	-19
b t	16
b table	-95
b tag	-55
b takes	-32
b tank	-18
b tap	49
b tape	17
b tel	-23
b temp	99
b ten	-37
b tenant	-26
b terms	-71
b tested	65
b th	-41
b than	54
b that	-24
b that's	-34
b the	-17
b their	-24
b then	-54
b there	-18
b thermostat	46
b thermostat's	48
b they	-16
b they'll	-42
b they're	-90
b they've	-43
b thick	45
b thin	75
b think	-17
b thinks	-38
b thirteen	67
b thirty	46
b this	-67
b those	22
b though	40
b three	20
b threw	16
b throw	38
b throwing	-31
b thurs	-22
b thursday	-21
b ticket	-26
b tied	24
b ties	52
b tight	18
b til	-31
b tile	51
b tiles	24
b till	-27
b time	-66
b times	-43
b to	42
b toast	30
b today	-20
b toilet	58
b tomorrow	-44
b top	-18
b torque	51
b torqued	31
b total	52
b tracking	-44
b trailer	-61
b trap	35
b tray	40
b tread	-35
b treads	43
b trim	58
b trimmed	45
b tripped	-36
b truck	36
b truck's	-63
b tube	15
b tubes	24
b turned	-54
b twelve	47
b twenty	48
b two	37
b txt	-40
b type	-75
b u	-71
b under	26
b unit	-93
b united	-24
b units	-37
b uppers	16
b upstairs	49
b used	102
b v	-22
b valve	75
b van	61
b vanity	77
b vent	57
b version	-24
b vikings	-74
b volt	-16
b volts	53
b w	17
b wait	26
b waiting	25
b walk	-42
b wall	72
b wall's	56
b wallpaper	-32
b walnut	-48
b want	54
b wanted	52
b wants	77
b wardrobe	-55
b waste	16
b water's	56
b way	-52
b we	41
b we've	31
b wednesday	-37
b week	-40
b went	28
b wet	61
b what's	-17
b when	50
b white	46
b whole	-22
b wide	51
b width	42
b will	20
b window	-63
b windows	19
b wire	19
b wire's	51
b with	35
b wo	-19
b won't	52
b wood's	40
b work	-26
b working	-23
b works	-17
b worth	-16
b would	17
b wrong	-17
b x	49
b yard	-48
b yeah	-19
b year	-25
b your	-47
b zero	-62
b zone	-93
bare 0	-20
bare 1	-52
bare 2	64
bare 3	28
claims 0	18
claims 2	-34
form 0figures 2	-18
form 0figures 4	-57
form figures 2	32
form figures 4	-49
form figures 5	-54
form oh	-40
form parts	66
form swallowed	-18
form swallowed round	-25
head 0	28
head 1	76
head 2	38
head 3	47
head none	-22
l of body	16
l of cars	-41
l of clock	-108
l of kin	-29
l of media	22
l of money	-58
l of papers	-32
l of past	28
l of phones	-69
l of roads	-100
l of school	-45
l of services	-31
l of sport	-70
l1 	33
l1 
	-118
l1 #	-28
l1 $	-119
l1 (	29
l1 +	66
l1 ,	50
l1 -	-57
l1 .	26
l1 /	17
l1 3	-22
l1 555	-18
l1 :	78
l1 <	21
l1 add	84
l1 addendum	-17
l1 adds	29
l1 after	-53
l1 aisle	-41
l1 all	80
l1 allow	52
l1 an	-74
l1 and	87
l1 another	-26
l1 apartment	-35
l1 apt	-44
l1 are	22
l1 around	-22
l1 at	35
l1 bath	-86
l1 bay	-102
l1 be	72
l1 bed	-59
l1 bedroom	-91
l1 before	-47
l1 better	17
l1 between	-21
l1 big	-36
l1 bldg	-48
l1 bottom	-53
l1 bought	81
l1 bout	45
l1 box	-15
l1 bracket	36
l1 breaker	-65
l1 bring	126
l1 broke	-18
l1 building	-42
l1 bus	-15
l1 but	29
l1 buy	116
l1 by	42
l1 came	16
l1 cat	-24
l1 catch	-16
l1 ceiling	-18
l1 ch	-60
l1 change	28
l1 channel	-37
l1 chapter	-21
l1 circuit	-93
l1 class	-19
l1 closet	48
l1 cloud	-18
l1 coat	-43
l1 code	-76
l1 code's	-55
l1 count	-19
l1 counted	30
l1 counter	-27
l1 cracked	26
l1 cut	72
l1 d	-18
l1 dash	-28
l1 day	-108
l1 detail	-24
l1 dock	-25
l1 doing	-28
l1 done	32
l1 door	-54
l1 double	-32
l1 down	29
l1 drawer	-35
l1 drove	33
l1 e	-23
l1 each	-44
l1 edge	29
l1 elevator	-22
l1 eleven	-16
l1 error	-44
l1 every	-29
l1 exit	-50
l1 exterior	-22
l1 f	-25
l1 fall's	16
l1 first	-31
l1 five	-35
l1 flat	-48
l1 floor	-49
l1 formula	-31
l1 found	71
l1 four	-39
l1 fourteen	-37
l1 framed	38
l1 front	29
l1 full	49
l1 gap	25
l1 garage	74
l1 get	146
l1 gets	49
l1 getting	22
l1 go	35
l1 going	41
l1 good	-42
l1 got	114
l1 grab	76
l1 grade	-31
l1 had	26
l1 hall	64
l1 has	91
l1 have	77
l1 he's	-85
l1 header's	17
l1 her	-23
l1 hole	-57
l1 hole's	53
l1 humidity's	30
l1 hung	52
l1 in	-65
l1 inch	68
l1 install	-30
l1 invoice	-46
l1 is	55
l1 it	70
l1 it's	-26
l1 item	-42
l1 job	-39
l1 just	81
l1 k	-16
l1 key	-66
l1 keynote	-25
l1 kitchen	46
l1 laid	40
l1 lane	-32
l1 last	23
l1 least	67
l1 leaves	61
l1 left	41
l1 level	-56
l1 line	-55
l1 local	-35
l1 longer	-17
l1 loop	-46
l1 lot	-99
l1 lvl	-42
l1 m	-50
l1 mark	-45
l1 marker	-20
l1 married	-17
l1 mate	-16
l1 maybe	85
l1 me	47
l1 measure	-43
l1 measured	21
l1 measures	27
l1 minus	16
l1 mode	-51
l1 moisture	44
l1 nd	-37
l1 need	127
l1 needs	81
l1 net	-44
l1 new	-85
l1 nine	-21
l1 nineteen	-22
l1 not	64
l1 note	-32
l1 now	66
l1 number	-195
l1 number's	-64
l1 of	-47
l1 off	-20
l1 oh	-30
l1 old	-86
l1 on	-33
l1 one	-70
l1 ones	28
l1 only	78
l1 opened	-27
l1 opening's	26
l1 or	-46
l1 order	34
l1 ordered	40
l1 ought	-35
l1 out	88
l1 over	23
l1 p	-52
l1 page	-42
l1 paid	-27
l1 panel	-17
l1 panel's	33
l1 par	-19
l1 phase	-21
l1 pin	-24
l1 plant	49
l1 plate	41
l1 plot	-49
l1 plus	67
l1 po	-22
l1 port	-28
l1 poured	27
l1 press	-20
l1 pressure's	-30
l1 psalm	-38
l1 pull	57
l1 pulling	57
l1 put	73
l1 quarter	48
l1 quoted	-52
l1 r	-66
l1 rack	-31
l1 rail's	20
l1 ran	57
l1 rate's	-29
l1 rated	38
l1 read	69
l1 reading	49
l1 reads	62
l1 red	43
l1 replaced	48
l1 return	23
l1 returned	21
l1 rev	-26
l1 rfi	-24
l1 rh	34
l1 right	-43
l1 rise	35
l1 riser	-23
l1 rm	-101
l1 road	-22
l1 room	-71
l1 row	-28
l1 rtu	-20
l1 run	56
l1 running	32
l1 said	16
l1 saves	-32
l1 say	50
l1 says	37
l1 second	-29
l1 section	-45
l1 see	53
l1 sent	30
l1 set	74
l1 she's	-36
l1 sheet	-43
l1 shelf	-34
l1 short	104
l1 shower	-32
l1 shows	30
l1 side	28
l1 side's	35
l1 since	-47
l1 six	16
l1 slab	16
l1 so	102
l1 solid	-23
l1 spacing	32
l1 span's	21
l1 spec	27
l1 spurs	-35
l1 square	-45
l1 stage	-43
l1 stair	-40
l1 static's	17
l1 station	-17
l1 step	-55
l1 still	69
l1 strike	-39
l1 suite	-35
l1 superheat	30
l1 sweet	-28
l1 switch	-57
l1 t	21
l1 table	-34
l1 take	27
l1 takes	-40
l1 tank	-16
l1 temp	34
l1 ten	-28
l1 than	49
l1 that	-83
l1 the	-97
l1 them	-18
l1 then	-40
l1 there	-22
l1 there's	23
l1 theres	20
l1 thing	-35
l1 this	-26
l1 ticket	-17
l1 til	-30
l1 till	-53
l1 to	70
l1 tomorrow	29
l1 took	46
l1 top	-17
l1 trailer	-16
l1 tread	-38
l1 treads	35
l1 truck	-53
l1 turned	-31
l1 twelve	-37
l1 twenty	-15
l1 two	47
l1 type	-62
l1 under	82
l1 unit	-135
l1 up	43
l1 us	32
l1 use	34
l1 used	111
l1 vanity	33
l1 version	-24
l1 wall	57
l1 wall's	33
l1 want	58
l1 wanted	33
l1 wants	84
l1 was	69
l1 we're	57
l1 well	36
l1 wide	19
l1 wire's	22
l1 with	18
l1 wo	-19
l1 x	80
l1 you	-24
l1 your	-47
l1 zone	-90
l1 £	-59
l1. #	30
l1. $	-119
l1. 's	98
l1. (	29
l1. +	66
l1. ,	50
l1. -	-57
l1. -ed	61
l1. -ing	39
l1. -ly	64
l1. -s	68
l1. .	26
l1. /	-105
l1. 1	-62
l1. :	78
l1. <	21
l1. Name	-107
l1. letter	-47
l1. one	-114
l1. unit	-51
l1. £	-59
l2 	-19
l2 
	41
l2 %	-27
l2 '	63
l2 (	49
l2 ,	26
l2 1	-71
l2 10	35
l2 118	-23
l2 14	21
l2 3	-39
l2 31	-56
l2 34	29
l2 4	18
l2 400	-23
l2 555	-28
l2 6	-44
l2 60	22
l2 600	43
l2 68	46
l2 8	-19
l2 9	19
l2 a	-158
l2 about	-20
l2 address	-26
l2 allow	45
l2 alright	-21
l2 amps	23
l2 an	-51
l2 anything	29
l2 are	34
l2 asked	30
l2 at	-107
l2 b	-20
l2 back	-16
l2 bags	19
l2 bar	17
l2 basement	39
l2 be	43
l2 bedroom	28
l2 bench	45
l2 billed	-49
l2 blinds	19
l2 block	35
l2 bolts	16
l2 book	23
l2 booked	-16
l2 bottom	32
l2 box	34
l2 boxes	63
l2 breaker's	38
l2 broke	81
l2 built	-19
l2 burned	36
l2 by	-68
l2 call	88
l2 calls	40
l2 came	24
l2 cap	36
l2 change	-69
l2 changed	31
l2 charge	-26
l2 charged	-59
l2 chimney	-37
l2 class	-22
l2 closer	47
l2 closes	-29
l2 code	71
l2 column	-30
l2 comes	31
l2 coming	-37
l2 corner	36
l2 could	17
l2 county	-20
l2 cut	56
l2 dip	-25
l2 dog	-25
l2 don't	-85
l2 done	34
l2 double	-29
l2 down	30
l2 dryer	-24
l2 edge	17
l2 eight	33
l2 eighths	22
l2 elbows	16
l2 em	32
l2 end	17
l2 epoxy	-44
l2 except	-23
l2 fan	-23
l2 fault	-22
l2 feet	-25
l2 fifty	-26
l2 first	33
l2 fitted	21
l2 flue	46
l2 flush	19
l2 foot	47
l2 footers	19
l2 for	-72
l2 forty	-36
l2 four	62
l2 fourth	-47
l2 friday	-40
l2 from	-60
l2 ft	38
l2 full	-55
l2 g	-33
l2 gang	-16
l2 gate	-24
l2 gauge	18
l2 gave	70
l2 get	-36
l2 give	-21
l2 glass	42
l2 go	-16
l2 gone	17
l2 good	36
l2 gotta	44
l2 grab	-22
l2 grid	16
l2 guy	43
l2 had	-32
l2 half	-22
l2 hand	18
l2 hardware	-51
l2 have	43
l2 he	-44
l2 he's	-26
l2 head	66
l2 header	32
l2 header's	20
l2 heads	-22
l2 held	25
l2 her	-45
l2 here	-40
l2 hes	-22
l2 high	52
l2 hinges	-34
l2 his	-31
l2 hole	19
l2 hours	-50
l2 house	-25
l2 humidity	44
l2 hundred	16
l2 hung	18
l2 i	101
l2 i'd	53
l2 i'll	20
l2 i'm	35
l2 in	-44
l2 inch	28
l2 inches	34
l2 inside	31
l2 instead	64
l2 it'll	49
l2 joists	32
l2 kid	-44
l2 kit	32
l2 kitchen	-31
l2 left	49
l2 leg	69
l2 lengths	34
l2 level	-40
l2 line	-19
l2 lock	22
l2 long	27
l2 loose	48
l2 low	55
l2 main	20
l2 make	86
l2 max	16
l2 maybe	-40
l2 me	-31
l2 meter	55
l2 mil	-56
l2 mile	-24
l2 million	-40
l2 missing	62
l2 mm	51
l2 monday	31
l2 more	37
l2 morning	35
l2 nails	16
l2 nineteen	-34
l2 no	-106
l2 north	20
l2 not	-69
l2 number	-33
l2 of	-68
l2 of body	-30
l2 of cars	-58
l2 of clock	-36
l2 of food	-22
l2 of kin	-55
l2 of money	-83
l2 of past	-20
l2 of phones	24
l2 of roads	41
l2 of school	-60
l2 of services	-28
l2 off	-56
l2 office	-18
l2 offset	29
l2 oh	-27
l2 ohms	25
l2 ok	-31
l2 okay	-26
l2 old	-17
l2 on	-41
l2 one	-27
l2 only	66
l2 opening	26
l2 or	19
l2 out	-41
l2 outlets	19
l2 over	20
l2 owes	-17
l2 pack	-15
l2 paid	-15
l2 paint	-16
l2 passed	-24
l2 per	-24
l2 pick	86
l2 picked	33
l2 pickets	90
l2 pipe	44
l2 plan	28
l2 plaster	22
l2 plate	-29
l2 play	-20
l2 please	15
l2 posts	18
l2 pressure's	36
l2 pumped	20
l2 put	66
l2 quarter	-37
l2 r	-69
l2 rail	41
l2 raise	57
l2 ran	-40
l2 real	39
l2 red	-61
l2 right	17
l2 room	-43
l2 rough	23
l2 round	-41
l2 rtu	-42
l2 sand	-27
l2 says	29
l2 scale	-26
l2 screws	56
l2 see	-38
l2 set	75
l2 sets	-50
l2 seven	-22
l2 seventy	41
l2 she	-45
l2 she'll	-51
l2 she's	-21
l2 sheets	-27
l2 shelf	36
l2 shim	37
l2 shop	-20
l2 short	57
l2 shorted	72
l2 shot	23
l2 should	59
l2 side	-19
l2 sill	54
l2 six	-25
l2 sixteen	19
l2 sixty	20
l2 smoko	-18
l2 so	27
l2 sockets	23
l2 sometime	-31
l2 somewhere	70
l2 space	19
l2 spec	69
l2 split	19
l2 stairs	-34
l2 start	16
l2 static	16
l2 sticks	26
l2 still	-16
l2 studs	54
l2 sub	-28
l2 subfloor	25
l2 subfloor's	18
l2 swap	30
l2 switch	25
l2 table	-50
l2 take	-36
l2 tape	28
l2 temp	22
l2 ten	-48
l2 tested	65
l2 that	42
l2 that's	-29
l2 the	-104
l2 there	-22
l2 there's	36
l2 thermostat	16
l2 thermostat's	42
l2 they're	-41
l2 thin	38
l2 third	-18
l2 three	60
l2 thursday	-34
l2 tile	17
l2 time	-33
l2 to	-29
l2 toast	23
l2 toilet	16
l2 tomorrow	-50
l2 torqued	31
l2 trap	41
l2 twenty	35
l2 two	-44
l2 type	-49
l2 u	-37
l2 under	-25
l2 unit	-22
l2 used	-18
l2 vanity	52
l2 wall	37
l2 walls	-35
l2 was	-96
l2 washer	39
l2 we	74
l2 we've	27
l2 went	68
l2 were	35
l2 which	24
l2 white	21
l2 width	43
l2 will	36
l2 window	-44
l2 windows	21
l2 wood	28
l2 zero	-66
l2. #	-19
l2. %	-27
l2. '	63
l2. (	49
l2. ,	26
l2. -ed	42
l2. -ly	-36
l2. -s	46
l2. /	36
l2. Name	-47
l2. letter	37
l2. n't	-71
l2. one	-48
l2. unit	20
l3 
	-16
l3 (	19
l3 ,	37
l3 /	26
l3 1	-40
l3 1.5	34
l3 10	-63
l3 12	34
l3 16	-30
l3 3	15
l3 450	-17
l3 5	-22
l3 6	22
l3 7	-44
l3 8	18
l3 9	-46
l3 ;	17
l3 a	39
l3 about	-33
l3 all	-22
l3 already	19
l3 also	-23
l3 am	-27
l3 amp	25
l3 amps	54
l3 an	54
l3 apart	44
l3 apiece	30
l3 are	-39
l3 as	23
l3 at	-78
l3 b	-31
l3 bags	-17
l3 base	15
l3 basement	-26
l3 bath	59
l3 bay	89
l3 be	-37
l3 bed	-20
l3 better	17
l3 between	-70
l3 boards	19
l3 book	-25
l3 both	-24
l3 bottom	21
l3 busted	-39
l3 but	-38
l3 buy	-21
l3 by	41
l3 call	-47
l3 came	73
l3 can't	21
l3 capped	22
l3 cause	-21
l3 change	44
l3 changed	35
l3 channel	-53
l3 circuit	41
l3 cleaned	40
l3 clear	34
l3 clips	26
l3 code	-30
l3 comes	-25
l3 crack	16
l3 cracked	30
l3 crane's	-28
l3 cut	46
l3 double	21
l3 dryer	34
l3 each	82
l3 eight	35
l3 eighty	-54
l3 ends	-22
l3 except	-15
l3 extension	17
l3 failed	-20
l3 fence	21
l3 flat	-30
l3 footers	22
l3 footy's	-18
l3 for	22
l3 fridge	22
l3 ft	19
l3 gap	28
l3 get	-69
l3 goal	-37
l3 goes	29
l3 going	-43
l3 gone	19
l3 good	18
l3 grab	37
l3 gray	-24
l3 guy	-21
l3 hardware	-27
l3 have	-27
l3 he	-56
l3 he's	-21
l3 heads	41
l3 her	-30
l3 hes	-46
l3 him	-48
l3 hinge	19
l3 his	-28
l3 hit	-23
l3 hole	29
l3 hood	18
l3 hour	-26
l3 hours	-30
l3 house	22
l3 hundred	-24
l3 hung	31
l3 i'd	40
l3 i'm	31
l3 i've	31
l3 if	60
l3 in	-44
l3 inch	32
l3 inches	-33
l3 inside	-19
l3 is	-43
l3 island	33
l3 it's	-33
l3 its	-33
l3 jumper	-53
l3 keep	37
l3 key	-30
l3 kicks	52
l3 knock	-30
l3 lady	-17
l3 last	-37
l3 left	-18
l3 leg	50
l3 like	15
l3 lot	15
l3 made	-52
l3 me	28
l3 meter	16
l3 mirror's	30
l3 mm	-25
l3 moisture	18
l3 more	33
l3 morning	-19
l3 move	45
l3 my	-50
l3 nailed	20
l3 need	-22
l3 new	22
l3 next	-35
l3 nine	43
l3 no	46
l3 nobody	-42
l3 nosing	-20
l3 nothing	30
l3 now	-22
l3 of	23
l3 off	-20
l3 oh	29
l3 ok	-28
l3 okay	-20
l3 old	67
l3 on	27
l3 one	-19
l3 ones	-22
l3 order	-15
l3 ordered	21
l3 other	-18
l3 ought	34
l3 out	-41
l3 over	18
l3 owner	-22
l3 paper	-28
l3 pick	26
l3 piece	17
l3 plus	15
l3 psi	25
l3 put	-67
l3 r	35
l3 rack	-39
l3 range	-15
l3 red	-23
l3 rental	-33
l3 rip	37
l3 room	42
l3 row	-33
l3 run	33
l3 s	37
l3 screw	15
l3 second	52
l3 see	-47
l3 seven	-25
l3 seventy	22
l3 she	-28
l3 shelves	31
l3 side	32
l3 since	-37
l3 slab	15
l3 somebody	45
l3 spacing	25
l3 stairs	24
l3 start	-29
l3 still	-42
l3 stuck	-19
l3 supposed	19
l3 switch	-24
l3 tap	26
l3 tape	-25
l3 temp	51
l3 ten	-56
l3 th	-22
l3 that's	-21
l3 the	34
l3 their	-16
l3 them	22
l3 there	43
l3 there's	-15
l3 they	-20
l3 they're	-24
l3 thick	65
l3 thinks	-38
l3 thirteen	45
l3 thirty	21
l3 three	-54
l3 thurs	-21
l3 thursday	31
l3 tile	48
l3 times	-45
l3 to	28
l3 tomorrow	47
l3 too	39
l3 torque	51
l3 truck	34
l3 twelve	26
l3 two	-27
l3 u	-40
l3 unit	33
l3 up	-44
l3 upstairs	27
l3 used	20
l3 valve	16
l3 van	24
l3 vent	33
l3 walk	-21
l3 water	-20
l3 way	-19
l3 well	32
l3 were	19
l3 white	57
l3 wide	29
l3 with	20
l3 won't	32
l3 wood	-34
l3 work	-16
l3 x	50
l3 yard	-32
l3 you	-56
l3. (	19
l3. ,	37
l3. -ed	-18
l3. -ing	23
l3. ;	17
l3. letter	21
l3. n't	48
letter head 0	-44
letter head none	-24
long 10	-57
long 16	20
long 30	55
more figures 5	-40
more l. word	-46
more r 	-35
more r. #	-35
more words round	-20
of body	23
of cars	29
of food	-36
of kin	-67
of media	-81
of money	-57
of papers	-37
of past	-57
of phones	-60
of roads	-25
of school	-22
of services	29
of so many 0	39
of so many 1	-33
of so many 2	-20
of so many 3	-39
one head none	-117
r of body	-37
r of cars	24
r of clock	-56
r of food	-54
r of kin	-131
r of money	-178
r of phones	-32
r of school	-22
r of services	74
r of sport	-60
r1 
	19
r1 )	-82
r1 ,	28
r1 -	-90
r1 .	15
r1 12	37
r1 2	62
r1 3	-26
r1 4	32
r1 5	22
r1 555	-27
r1 :	-129
r1 @	17
r1 a	-50
r1 aa	31
r1 about	-23
r1 above	22
r1 across	27
r1 adds	-45
r1 aff	18
r1 again	-35
r1 agree	-40
r1 all	15
r1 along	17
r1 already	-43
r1 amigos	-43
r1 an	-52
r1 anchors	46
r1 angry	-36
r1 apart	72
r1 are	17
r1 area	-33
r1 at	60
r1 b	-45
r1 back	60
r1 bad	32
r1 balusters	16
r1 banksia	-26
r1 base	17
r1 bath	38
r1 baths	33
r1 batts	-27
r1 bays	-20
r1 bedroom	-23
r1 below	21
r1 belt	-17
r1 blade	-23
r1 blades	30
r1 blank	21
r1 blinds	22
r1 block	16
r1 blocks	45
r1 board	47
r1 boards	61
r1 bolts	27
r1 bracket	45
r1 brackets	46
r1 brass	45
r1 brick	31
r1 broken	43
r1 bucks	-122
r1 bulbs	23
r1 business	-36
r1 but	47
r1 by	55
r1 c	-36
r1 cabinet	24
r1 call	20
r1 came	17
r1 can	-32
r1 card	-21
r1 centers	38
r1 centres	31
r1 cents	-43
r1 chance	-51
r1 chipped	24
r1 clamps	17
r1 clear	56
r1 clips	43
r1 closed	59
r1 closets	38
r1 code	-19
r1 come	-35
r1 coming	49
r1 corner	53
r1 couplings	25
r1 cracked	62
r1 crew	-53
r1 cut	21
r1 dash	-21
r1 dead	30
r1 deep	85
r1 digits	-28
r1 does	-18
r1 dollar	-60
r1 dollars	-63
r1 done	51
r1 doors	53
r1 double	37
r1 down	16
r1 downstairs	21
r1 drip	47
r1 drops	51
r1 elbows	39
r1 elsewhere	27
r1 euro	-98
r1 even	23
r1 every	-21
r1 extra	73
r1 fall	35
r1 fifty	-18
r1 filter	18
r1 fingers	-36
r1 first	-20
r1 five	-60
r1 flat	26
r1 floor	23
r1 footings	25
r1 forty	-21
r1 four	-55
r1 fourteen	-15
r1 fourth	-16
r1 full	23
r1 gang	-80
r1 gasket	24
r1 get	-38
r1 gets	-57
r1 go	-66
r1 goes	-50
r1 good	32
r1 got	-16
r1 grille	-41
r1 guys	-85
r1 had	-35
r1 hall	61
r1 hand	-41
r1 handle	-72
r1 hangers	45
r1 has	-77
r1 have	38
r1 he'll	-48
r1 head	28
r1 heads	56
r1 heavy	22
r1 here	59
r1 high	77
r1 hinge	18
r1 hinges	61
r1 hit	-32
r1 hole	-99
r1 homeruns	-16
r1 hooks	51
r1 hot	20
r1 hundreds	-32
r1 hung	27
r1 i	45
r1 i'll	30
r1 i've	-17
r1 if	-26
r1 in	32
r1 instead	37
r1 is	-114
r1 ish	-43
r1 it	-19
r1 it'll	-31
r1 joist	16
r1 just	50
r1 keys	-26
r1 kinds	-60
r1 knobs	25
r1 larch	-39
r1 last	-46
r1 layer	-81
r1 layers	41
r1 left	78
r1 leg	-21
r1 lights	49
r1 like	-22
r1 line	-19
r1 lives	-33
r1 long	88
r1 loose	34
r1 man	-28
r1 maple	-42
r1 max	34
r1 miles	-35
r1 missing	36
r1 moisture	26
r1 more	119
r1 moves	-18
r1 nail	35
r1 need	62
r1 needs	-57
r1 new	58
r1 next	-33
r1 nil	-33
r1 nine	16
r1 ninety	-36
r1 ninth	-26
r1 nos	33
r1 not	38
r1 nothing	-45
r1 number	17
r1 o'clock	-95
r1 oc	65
r1 oclock	-41
r1 off	76
r1 old	21
r1 openings	24
r1 or	-23
r1 outlets	73
r1 outside	20
r1 outta	38
r1 panel	-119
r1 panels	26
r1 part	-61
r1 pascals	21
r1 pavers	44
r1 per	79
r1 pickets	24
r1 piers	24
r1 pipe	21
r1 plate	18
r1 pm	-35
r1 pole	-23
r1 posts	22
r1 potato	-46
r1 pulls	54
r1 put	-33
r1 quarter	-34
r1 quid	-50
r1 r	-18
r1 rail	44
r1 reads	-33
r1 receps	29
r1 receptacles	37
r1 reducer	32
r1 risers	18
r1 rolled	-17
r1 roof	-17
r1 rubber	28
r1 running	36
r1 runs	71
r1 sash	-26
r1 says	-80
r1 sconces	33
r1 score	-27
r1 screens	51
r1 screw	19
r1 screws	77
r1 sec	-24
r1 second	-71
r1 series	-17
r1 shakes	-35
r1 sharp	-53
r1 she	-23
r1 shelves	18
r1 shims	23
r1 short	34
r1 shot	-25
r1 should	49
r1 shows	-26
r1 side	-23
r1 sides	-29
r1 silicone	-22
r1 slope	27
r1 smoke	37
r1 so	52
r1 south	20
r1 spaces	28
r1 spare	41
r1 square	23
r1 star	-20
r1 stars	-60
r1 starts	-16
r1 still	65
r1 stops	-45
r1 straps	37
r1 stripped	26
r1 studs	58
r1 supply	16
r1 sure	-39
r1 switch	46
r1 switches	32
r1 tall	21
r1 ten	44
r1 the	-48
r1 then	-43
r1 there	-29
r1 thick	56
r1 thing	-23
r1 things	-79
r1 this	-33
r1 three	15
r1 through	-20
r1 tile	52
r1 tiles	38
r1 till	-26
r1 time	-19
r1 times	-150
r1 to	19
r1 today	-21
r1 toilet	44
r1 toilets	35
r1 tomorrow	-65
r1 tonight	32
r1 top	26
r1 total	40
r1 towel	27
r1 treads	83
r1 trees	27
r1 trim	18
r1 tripped	-35
r1 two	-37
r1 u	-21
r1 under	30
r1 up	20
r1 used	16
r1 vanities	18
r1 walls	39
r1 wants	-31
r1 was	-73
r1 washers	19
r1 waste	26
r1 wax	25
r1 way	-82
r1 ways	-66
r1 we	-18
r1 wednesday	41
r1 were	32
r1 when	22
r1 while	19
r1 white	31
r1 wide	72
r1 will	29
r1 window	-55
r1 windows	61
r1 won't	35
r1 wood	-16
r1 work	30
r1 wrongs	-54
r1 x	65
r1. 's	57
r1. )	-82
r1. ,	28
r1. -	-90
r1. -ing	27
r1. -ly	17
r1. -s	28
r1. .	15
r1. /	17
r1. 1	22
r1. :	-129
r1. @	17
r1. Name	-42
r1. letter	43
r1. n't	25
r1. one	-103
r1. word	30
r2 "	38
r2 (	-37
r2 *	-23
r2 +	22
r2 -	15
r2 .	29
r2 /	-20
r2 00	-17
r2 0142	-22
r2 100	43
r2 12	77
r2 15	26
r2 16	24
r2 2	-39
r2 20	-19
r2 22	16
r2 28	36
r2 30	-25
r2 34	-29
r2 36	17
r2 5	-33
r2 7	-48
r2 8	48
r2 :	-82
r2 a	-43
r2 about	-46
r2 also	-52
r2 amp	18
r2 an	17
r2 and	23
r2 are	61
r2 ask	47
r2 at	-38
r2 b	-22
r2 back	-41
r2 bags	19
r2 bath	-32
r2 be	67
r2 bedroom	-36
r2 before	-31
r2 behind	19
r2 bent	28
r2 blind	-21
r2 bolts	18
r2 bought	37
r2 box	-62
r2 boxes	37
r2 but	19
r2 buy	27
r2 by	-21
r2 c	-19
r2 call	-17
r2 can't	-24
r2 cap	37
r2 caulk	50
r2 ceiling	-21
r2 center	68
r2 change	-47
r2 changed	19
r2 client	-38
r2 clips	19
r2 close	39
r2 code	71
r2 concrete	-25
r2 crack	-24
r2 cracked	80
r2 crown	-21
r2 day	-30
r2 days	-45
r2 deal	-27
r2 do	55
r2 done	-39
r2 down	-99
r2 each	68
r2 eight	-20
r2 eighty	-49
r2 elbow	-23
r2 em	92
r2 epoxy	-30
r2 every	31
r2 extra	-21
r2 far	56
r2 fifty	-27
r2 filters	25
r2 fine	50
r2 five	-64
r2 foot	21
r2 footers	34
r2 for	56
r2 four	-29
r2 fourteen	46
r2 fridays	-38
r2 from	-19
r2 front	59
r2 furnace	-50
r2 gallon	-15
r2 gang	-24
r2 glue	-32
r2 go	63
r2 good	19
r2 got	43
r2 grade	42
r2 ground	-21
r2 half	28
r2 hang	59
r2 hangers	21
r2 he	-52
r2 he's	-20
r2 heads	22
r2 hinges	-43
r2 his	16
r2 hole	-22
r2 hour	-53
r2 house	20
r2 hung	38
r2 i	18
r2 if	-25
r2 inch	56
r2 inside	30
r2 it	17
r2 joist	21
r2 june	-15
r2 kitchen	17
r2 latch	24
r2 laundry	-33
r2 leaking	20
r2 lift	-23
r2 lime	22
r2 lines	17
r2 ln	-17
r2 low	17
r2 master	16
r2 mate	-35
r2 me	-33
r2 mirror	-23
r2 missing	38
r2 monday	-31
r2 morning	-19
r2 must	-17
r2 night	-63
r2 nine	-43
r2 ninety	29
r2 no	-18
r2 noon	-43
r2 not	32
r2 nothing	-24
r2 nuts	43
r2 of	-34
r2 off	-16
r2 oh	-33
r2 ok	21
r2 on	23
r2 one	-49
r2 ones	26
r2 open	34
r2 or	32
r2 order	-20
r2 outlets	26
r2 paint	32
r2 panel	32
r2 patch	41
r2 plaster	31
r2 play	-54
r2 plus	23
r2 pop	-26
r2 pound	25
r2 primer	60
r2 put	21
r2 quarter	24
r2 rail	-18
r2 range	-42
r2 right	-22
r2 ring	57
r2 rolls	21
r2 room	-20
r2 s	-23
r2 same	23
r2 sand	23
r2 saturday	-32
r2 sent	15
r2 set	-26
r2 she's	27
r2 sheets	19
r2 shelf	30
r2 short	33
r2 should	-22
r2 showed	-38
r2 shower	-38
r2 shut	-24
r2 side	52
r2 signed	-41
r2 single	47
r2 site	59
r2 six	-40
r2 sixteen	19
r2 skip	-21
r2 slab	22
r2 so	-19
r2 somewhere	-17
r2 spring	-19
r2 st	-29
r2 start	-27
r2 state	-37
r2 station	24
r2 still	-43
r2 stop	24
r2 street	-15
r2 sunday	-54
r2 swap	46
r2 take	-19
r2 ten	56
r2 tens	20
r2 that	-26
r2 the	52
r2 them	33
r2 then	21
r2 there's	-40
r2 these	30
r2 they	-40
r2 they're	35
r2 thing	-59
r2 thirteen	19
r2 this	45
r2 those	-31
r2 three	-44
r2 thursday	-42
r2 tiles	18
r2 today	39
r2 tomorrow	21
r2 trips	-32
r2 truck	22
r2 twelve	18
r2 u	-16
r2 upstairs	-40
r2 us	-79
r2 used	33
r2 want	35
r2 wants	-26
r2 was	34
r2 washer	20
r2 way	-27
r2 we're	-24
r2 week	-22
r2 will	16
r2 window	-15
r2 windows	-26
r2 with	-17
r2 wrong	17
r2 x	57
r2 you're	57
r2 zero	-16
r2. "	38
r2. 's	-21
r2. (	-37
r2. *	-23
r2. +	22
r2. -	15
r2. -ing	31
r2. -s	21
r2. .	29
r2. :	-82
r2. Name	-94
r2. letter	17
r2. n't	-15
r2. one	-63
r2. unit	61
r3 "	-18
r3 %	41
r3 '	-55
r3 +	17
r3 -	-17
r3 10	-18
r3 12	28
r3 14	-45
r3 24	24
r3 28	-42
r3 3	33
r3 5	66
r3 6	-29
r3 8	33
r3 9	-19
r3 :	-69
r3 ;	-40
r3 a	-48
r3 air	35
r3 anchors	17
r3 and	39
r3 another	23
r3 app	-27
r3 are	24
r3 ask	-20
r3 bag	-15
r3 bar	23
r3 base	-20
r3 bath	25
r3 before	-29
r3 behind	52
r3 black	66
r3 blue	-19
r3 board	-45
r3 boards	32
r3 bottom	86
r3 box	39
r3 bracket	29
r3 breakers	17
r3 broken	23
r3 bulbs	20
r3 by	20
r3 can	27
r3 caps	15
r3 case	24
r3 centre	28
r3 change	-19
r3 chipped	49
r3 clean	24
r3 close	-42
r3 closet	49
r3 color	-44
r3 coming	-25
r3 complaining	-22
r3 corner	34
r3 count	46
r3 cover	41
r3 cracked	-47
r3 crew	-72
r3 dead	36
r3 done	-26
r3 door	53
r3 dot	-31
r3 down	17
r3 drain	27
r3 drawer	-23
r3 dry	20
r3 dryer	36
r3 dumpster	-23
r3 each	-26
r3 edge	53
r3 eight	-40
r3 eighteen	28
r3 either	-27
r3 eleven	-28
r3 end	35
r3 every	-19
r3 falls	-28
r3 family	-19
r3 fault	-26
r3 feet	30
r3 field	31
r3 fifteen	25
r3 filler	-22
r3 find	-20
r3 fine	21
r3 fixed	-27
r3 flapper	-33
r3 flashing	49
r3 flat	30
r3 for	-53
r3 from	-20
r3 furnace	-17
r3 gang	45
r3 gap	22
r3 gauge	42
r3 get	-18
r3 gets	20
r3 glass	31
r3 go	25
r3 goes	24
r3 good	-36
r3 got	53
r3 gotta	21
r3 grab	-23
r3 grille	-41
r3 guy	-23
r3 guys	-38
r3 hall	25
r3 hangers	28
r3 have	26
r3 he	-28
r3 he's	-69
r3 head	-29
r3 her	26
r3 hinge	32
r3 hinges	-26
r3 how	-57
r3 i	-20
r3 i'll	-23
r3 i'm	-21
r3 if	-27
r3 in	-34
r3 inch	-28
r3 is	-40
r3 island	-23
r3 it	25
r3 it's	29
r3 kg	16
r3 kit	16
r3 kitchen	39
r3 knocked	-18
r3 landing	44
r3 late	-26
r3 lazy	-30
r3 leave	30
r3 left	-16
r3 leg	65
r3 length	50
r3 lid	20
r3 lift	-48
r3 like	-39
r3 line	16
r3 long	28
r3 lot	-45
r3 manual	-28
r3 meter	25
r3 middle	73
r3 min	-25
r3 missing	-47
r3 mm	-16
r3 monday	-29
r3 more	-28
r3 morning	-34
r3 move	16
r3 nail	-37
r3 need	33
r3 neutral	39
r3 new	-38
r3 nine	-26
r3 ninety	27
r3 no	-27
r3 nose	42
r3 not	21
r3 number	23
r3 of	18
r3 off	-24
r3 oh	19
r3 old	-39
r3 open	-19
r3 order	28
r3 ought	30
r3 out	90
r3 over	-26
r3 paint	17
r3 panel	33
r3 panels	27
r3 people	-21
r3 plate	21
r3 porch	40
r3 quarter	26
r3 radio	-44
r3 ran	43
r3 range	-25
r3 required	-21
r3 reset	-22
r3 return	-26
r3 right	-40
r3 room	-20
r3 run	48
r3 runs	-17
r3 s	19
r3 safe	49
r3 sand	17
r3 says	34
r3 screw	-15
r3 second	-15
r3 set	18
r3 seven	-25
r3 seventh	-30
r3 seventy	58
r3 she's	25
r3 short	54
r3 side	-16
r3 sill	39
r3 sister	27
r3 sixteen	45
r3 sixty	30
r3 slope	28
r3 so	-22
r3 socket	17
r3 some	31
r3 stairs	16
r3 steps	21
r3 sticks	20
r3 still	-22
r3 stone	-38
r3 straps	-24
r3 stripped	20
r3 stud	29
r3 studs	24
r3 switch	31
r3 tag	-20
r3 take	43
r3 tape	45
r3 ten	-31
r3 tens	20
r3 thank	-22
r3 then	19
r3 there	-25
r3 thermostat	-34
r3 thirty	21
r3 this	-38
r3 those	27
r3 through	-50
r3 tile's	41
r3 to	-18
r3 today	-46
r3 together	-33
r3 too	16
r3 towel	17
r3 tread	-44
r3 trim	-20
r3 truck	-17
r3 tub	36
r3 tubes	25
r3 twelve	-32
r3 twenty	52
r3 two	-41
r3 under	-19
r3 up	-25
r3 upstairs	16
r3 use	44
r3 van	29
r3 vent	-21
r3 wall	20
r3 was	-24
r3 waste	32
r3 way	57
r3 we	42
r3 we're	20
r3 week	-25
r3 where	29
r3 white	-27
r3 window	-16
r3 wire's	41
r3 x	31
r3. "	-18
r3. %	41
r3. '	-55
r3. 's	20
r3. +	17
r3. -	-17
r3. -ed	55
r3. -ly	-28
r3. 1	23
r3. :	-69
r3. ;	-40
r3. Name	-22
r3. n't	-18
r3. one	19
r3. unit	38
rule 	-52
rule eachOf	83
rule pair	166
rule quantity/decimal	52
rule quantity/mixed	55
rule quantity/whole+taken-back	22
rule range	28
size 0	-19
size 1	-31
size 20	26
size 60	29
size 9999	-43
size more	-58
unit head 0	-50
unit head 1	-40
unit head none	-21
units 0	-48
units 1	54
units 2	38
word head 2	21
word head 3	56
£ head none	-59
`;
