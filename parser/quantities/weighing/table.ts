/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 1	87
# head 2	32
\$ head none	-110
's head 0	-23
's head 1	-18
's head none	105
( head none	27
+ head 0	20
+ head 1	22
+ head none	30
, head 0	56
, head 1	26
, head none	19
- head 1	23
- head none	-62
-ed head 0	26
-ed head 1	31
-ed head none	29
-ing head 0	25
-ing head none	19
-ly head none	77
-s head 0	77
-s head 1	39
-s head none	31
. head 0	40
. head 1	29
. head none	-16
/ head none	-132
0 l 	-27
0 l. #	-27
0 l. 1	-26
0 l. word	22
0 r 	-35
0 r. #	-35
0 r. word	-19
1 figures 1	49
1 head 0	35
1 head none	-92
1 l 
	-24
1 l +	23
1 l ,	72
1 l -	16
1 l .	38
1 l and	65
1 l another	-105
1 l at	34
1 l back	-15
1 l bath	-56
1 l be	20
1 l bottom	-45
1 l bought	67
1 l bring	55
1 l but	-42
1 l buy	64
1 l by	51
1 l cut	-26
1 l each	-47
1 l every	-96
1 l get	107
1 l good	-31
1 l got	66
1 l grab	41
1 l had	28
1 l hall	48
1 l have	28
1 l in	33
1 l inch	64
1 l is	-47
1 l it	17
1 l just	80
1 l last	-101
1 l left	-48
1 l long	-16
1 l longer	-16
1 l me	44
1 l nd	-35
1 l need	53
1 l new	-98
1 l no	-29
1 l old	-69
1 l only	26
1 l order	55
1 l other	-108
1 l pick	-63
1 l plus	53
1 l put	54
1 l red	43
1 l right	-46
1 l second	-39
1 l short	69
1 l so	21
1 l square	-46
1 l take	-29
1 l that	-117
1 l that's	-18
1 l the	-186
1 l there's	44
1 l this	-45
1 l to	-54
1 l type	-35
1 l up	24
1 l used	22
1 l want	55
1 l was	39
1 l wrong	-28
1 l. +	23
1 l. ,	72
1 l. -	16
1 l. -ing	-65
1 l. -s	-45
1 l. .	38
1 l. /	-24
1 l. word	-36
1 parts	99
1 r 	20
1 r 
	18
1 r )	-26
1 r -	-35
1 r .	-49
1 r 3	35
1 r 4	17
1 r :	-19
1 r at	-27
1 r b	16
1 r before	-34
1 r behind	16
1 r belt	-20
1 r bracket	40
1 r cracked	62
1 r door	32
1 r down	-34
1 r eight	20
1 r end	-33
1 r five	-21
1 r for	53
1 r from	-17
1 r gasket	24
1 r get	-26
1 r goes	-26
1 r hand	-43
1 r has	-38
1 r head	26
1 r here	36
1 r i	-25
1 r is	-32
1 r it's	-18
1 r kitchen	27
1 r leg	-32
1 r missing	31
1 r new	50
1 r nine	23
1 r of	-224
1 r off	23
1 r old	23
1 r on	-22
1 r out	-22
1 r over	-17
1 r panel	-61
1 r reads	-20
1 r reducer	32
1 r ring	35
1 r rod	-17
1 r seven	19
1 r shelf	-38
1 r side	-24
1 r so	-45
1 r spare	24
1 r the	18
1 r they	-22
1 r thing	-24
1 r time	-22
1 r to	-65
1 r towel	16
1 r two	-17
1 r up	-47
1 r was	-29
1 r wax	17
1 r wednesday	36
1 r when	19
1 r white	19
1 r with	-17
1 r. #	20
1 r. )	-26
1 r. -	-35
1 r. -ing	36
1 r. -s	-86
1 r. .	-49
1 r. /	18
1 r. 1	94
1 r. :	-19
1 r. one	21
1 r. word	-30
1 words	-69
12 0figures 2	-15
12 figures 1	-16
12 l 	45
12 l 
	-45
12 l .	-17
12 l :	57
12 l a	24
12 l after	-25
12 l all	78
12 l and	31
12 l apartment	-21
12 l around	-32
12 l at	-102
12 l back	-18
12 l bay	-30
12 l be	-27
12 l before	-45
12 l bout	45
12 l box	-21
12 l breaker	-34
12 l bring	16
12 l buy	22
12 l by	26
12 l cat	-16
12 l channel	-29
12 l circuit	-72
12 l cut	26
12 l detail	-23
12 l door	-53
12 l e	-22
12 l every	48
12 l exit	-21
12 l fla	18
12 l flat	-27
12 l floor	-43
12 l for	30
12 l four	-20
12 l garage	70
12 l got	47
12 l grab	27
12 l had	27
12 l has	19
12 l house	-51
12 l hung	59
12 l is	25
12 l it	76
12 l it's	-46
12 l its	-34
12 l keynote	-21
12 l last	36
12 l least	53
12 l leaves	54
12 l line	-40
12 l lot	-37
12 l maybe	27
12 l need	71
12 l needs	20
12 l not	26
12 l number	-101
12 l number's	-27
12 l on	-18
12 l ought	-37
12 l page	-16
12 l past	-58
12 l port	-28
12 l poured	27
12 l pulling	26
12 l put	16
12 l ran	66
12 l reading	-35
12 l replaced	17
12 l riser	-45
12 l rm	-32
12 l road	-19
12 l room	15
12 l saves	-34
12 l sent	34
12 l set	-21
12 l sheet	-23
12 l so	37
12 l solid	-22
12 l step	-37
12 l take	47
12 l the	18
12 l through	-29
12 l til	-31
12 l took	33
12 l tread	-25
12 l truck	-27
12 l unit	-72
12 l up	53
12 l us	43
12 l used	34
12 l we're	45
12 l x	41
12 l zone	-20
12 l. #	45
12 l. 's	28
12 l. -ed	80
12 l. -ing	-19
12 l. .	-17
12 l. /	-45
12 l. :	57
12 l. Name	-43
12 l. letter	-16
12 l. one	-31
12 parts	44
12 r )	-33
12 r .	23
12 r 1	-28
12 r :	-53
12 r a	17
12 r anchors	36
12 r angry	-34
12 r at	29
12 r boards	28
12 r bucks	-26
12 r by	69
12 r come	-29
12 r dash	-17
12 r dead	35
12 r deep	48
12 r done	41
12 r door	-37
12 r doors	53
12 r down	20
12 r downstairs	17
12 r drops	48
12 r eight	-21
12 r elbows	17
12 r fifty	-24
12 r for	33
12 r forty	-19
12 r four	-18
12 r gets	-27
12 r goes	-17
12 r got	-32
12 r hangers	28
12 r has	-19
12 r heads	18
12 r hinges	17
12 r hole	-58
12 r i	26
12 r instead	42
12 r is	-32
12 r last	-20
12 r left	66
12 r more	49
12 r needs	-55
12 r no	-43
12 r o'clock	-33
12 r of	60
12 r on	24
12 r openings	21
12 r out	-73
12 r outlets	15
12 r over	31
12 r panel	-35
12 r pulls	19
12 r says	-26
12 r sharp	-38
12 r short	46
12 r shows	-28
12 r so	35
12 r studs	47
12 r this	-18
12 r tiles	18
12 r till	-28
12 r times	-45
12 r to	-24
12 r tomorrow	-28
12 r total	22
12 r wants	-25
12 r was	-31
12 r we	-18
12 r when	-34
12 r with	18
12 r x	30
12 r. 's	40
12 r. )	-33
12 r. -ed	24
12 r. -ing	24
12 r. -s	53
12 r. .	23
12 r. :	-53
12 r. Name	-39
12 r. letter	-18
12 r. one	-79
12 r. unit	37
12 words	26
12 words round	-25
2 l 	30
2 l 
	-34
2 l (	31
2 l +	23
2 l -	-28
2 l .	20
2 l addendum	-16
2 l another	30
2 l at	-75
2 l back	38
2 l bath	-43
2 l bay	-60
2 l be	22
2 l bed	-23
2 l bedroom	-68
2 l bought	38
2 l bring	61
2 l buy	45
2 l count	-15
2 l day	-60
2 l drawer	-33
2 l flat	-35
2 l fourteen	-47
2 l get	34
2 l gets	29
2 l have	38
2 l header's	21
2 l in	-21
2 l it	-23
2 l it's	42
2 l maybe	68
2 l need	41
2 l needs	17
2 l number	-51
2 l of	-44
2 l on	20
2 l one	-16
2 l other	21
2 l press	-19
2 l put	18
2 l so	41
2 l t	-24
2 l takes	-37
2 l the	66
2 l then	-30
2 l there's	-62
2 l took	31
2 l two	28
2 l type	-24
2 l up	30
2 l used	20
2 l wants	31
2 l we're	16
2 l with	28
2 l zone	-20
2 l. #	30
2 l. 's	74
2 l. (	31
2 l. +	23
2 l. -	-28
2 l. .	20
2 l. /	-34
2 l. 1	32
2 l. letter	-19
2 l. one	-41
2 l. unit	-55
2 parts	22
2 r ,	-16
2 r -	-29
2 r 3	-31
2 r :	-49
2 r and	-49
2 r at	84
2 r can	-43
2 r cents	-30
2 r clamps	18
2 r couplings	23
2 r doors	65
2 r eight	-32
2 r extra	21
2 r five	37
2 r for	20
2 r gang	-78
2 r guys	-63
2 r had	-29
2 r half	24
2 r high	41
2 r hinges	19
2 r i	27
2 r in	37
2 r is	-35
2 r left	53
2 r man	-27
2 r more	53
2 r new	26
2 r nil	-32
2 r no	15
2 r nos	16
2 r o'clock	-29
2 r of	105
2 r one	-46
2 r panel	-46
2 r part	-56
2 r pole	-68
2 r screws	32
2 r sides	-29
2 r spare	21
2 r supply	15
2 r ten	20
2 r the	-44
2 r times	-33
2 r to	52
2 r tomorrow	-18
2 r twenty	21
2 r two	29
2 r we	-16
2 r window	-38
2 r windows	40
2 r wrongs	-36
2 r. ,	-16
2 r. -	-29
2 r. -ed	-32
2 r. -ly	15
2 r. -s	16
2 r. :	-49
2 r. one	64
2 r. word	16
20 l ,	32
20 l .	-21
20 l a	44
20 l all	27
20 l and	32
20 l at	53
20 l counted	18
20 l every	54
20 l exit	-17
20 l for	-73
20 l got	16
20 l has	18
20 l house	-35
20 l in	-42
20 l is	59
20 l item	-28
20 l like	-26
20 l lot	-26
20 l maybe	23
20 l me	-22
20 l of	28
20 l on	-18
20 l out	20
20 l r	-71
20 l reads	-20
20 l says	43
20 l set	52
20 l side	31
20 l so	28
20 l sweet	-35
20 l that's	-32
20 l the	-38
20 l there's	29
20 l two	20
20 l under	43
20 l used	28
20 l was	-32
20 l. ,	32
20 l. -ed	-19
20 l. -ing	57
20 l. -s	25
20 l. .	-21
20 l. letter	-60
20 l. unit	40
20 parts	18
20 r 	17
20 r ,	-18
20 r .	40
20 r at	26
20 r before	23
20 r bucks	-52
20 r by	31
20 r centers	30
20 r clips	21
20 r deep	17
20 r even	20
20 r for	-27
20 r hung	21
20 r i	36
20 r ninety	-34
20 r ninth	-21
20 r oc	40
20 r risers	23
20 r second	-43
20 r so	28
20 r to	38
20 r total	20
20 r treads	28
20 r twelve	-22
20 r twenty	-20
20 r two	-42
20 r we	20
20 r. #	17
20 r. 's	22
20 r. ,	-18
20 r. -s	39
20 r. .	40
20 r. Name	-16
20 r. one	-110
20 r. word	54
5 l 	42
5 l 
	-61
5 l ,	68
5 l :	20
5 l a	-32
5 l about	-61
5 l after	-32
5 l and	21
5 l another	43
5 l at	-71
5 l bath	-24
5 l bay	-45
5 l be	50
5 l bed	-45
5 l bedroom	-17
5 l bring	25
5 l by	-61
5 l code	-45
5 l cut	20
5 l day	-58
5 l dock	-25
5 l door	-40
5 l five	-18
5 l flat	-48
5 l for	39
5 l found	25
5 l get	43
5 l gets	24
5 l got	31
5 l has	43
5 l have	29
5 l in	17
5 l it's	-20
5 l kitchen	42
5 l lane	-28
5 l last	28
5 l leaves	24
5 l left	41
5 l level	-44
5 l loop	-43
5 l me	36
5 l mode	-48
5 l need	25
5 l no	-19
5 l not	51
5 l number	-47
5 l only	39
5 l order	-39
5 l other	78
5 l out	70
5 l over	66
5 l paid	-18
5 l put	17
5 l replaced	28
5 l rev	-21
5 l room	-58
5 l says	29
5 l shelf	-30
5 l short	43
5 l so	28
5 l strike	-19
5 l switch	-33
5 l that	35
5 l that's	23
5 l the	-37
5 l till	-29
5 l to	24
5 l took	-16
5 l truck	-21
5 l two	-18
5 l unit	-51
5 l up	24
5 l us	46
5 l use	21
5 l used	33
5 l wall	32
5 l want	20
5 l was	56
5 l zone	-58
5 l. #	36
5 l. 's	-27
5 l. ,	68
5 l. -ed	29
5 l. -s	76
5 l. /	-63
5 l. :	20
5 l. Name	-53
5 l. one	-54
5 l. unit	-53
5 r )	-47
5 r -	-48
5 r 2	32
5 r :	-27
5 r a	-20
5 r aa	31
5 r amigos	-46
5 r and	23
5 r are	23
5 r at	27
5 r baths	33
5 r batts	-37
5 r blinds	21
5 r brackets	41
5 r bulbs	27
5 r business	-44
5 r but	48
5 r by	-36
5 r came	-26
5 r closets	36
5 r dead	18
5 r digits	-33
5 r doors	-29
5 r five	-15
5 r for	37
5 r four	-48
5 r guys	-42
5 r had	-23
5 r has	-21
5 r hinges	27
5 r hole	-41
5 r hooks	39
5 r in	48
5 r is	-73
5 r layers	40
5 r left	48
5 r lights	25
5 r more	69
5 r nail	32
5 r o'clock	-60
5 r of	117
5 r on	-25
5 r outlets	43
5 r per	50
5 r screens	53
5 r should	28
5 r spaces	26
5 r stars	-60
5 r still	57
5 r the	-72
5 r things	-53
5 r three	15
5 r tile	44
5 r times	-79
5 r today	-28
5 r tomorrow	-50
5 r treads	16
5 r tripped	-24
5 r way	-72
5 r went	30
5 r windows	25
5 r x	35
5 r. 's	-24
5 r. )	-47
5 r. -	-48
5 r. -ed	23
5 r. -s	35
5 r. :	-27
5 r. n't	-44
5 r. one	-33
5 r. word	17
60 l \$	-34
60 l ,	-17
60 l -	-55
60 l a	38
60 l about	20
60 l around	65
60 l at	92
60 l breaker	-28
60 l by	44
60 l catch	-22
60 l cut	30
60 l eleven	-18
60 l error	-37
60 l from	44
60 l he's	-67
60 l house	73
60 l in	-66
60 l is	72
60 l it	-31
60 l lot	-30
60 l maybe	-34
60 l me	-27
60 l need	24
60 l needs	28
60 l net	-45
60 l not	49
60 l number	-75
60 l of	-31
60 l ordered	23
60 l po	-19
60 l said	-19
60 l say	34
60 l says	42
60 l side	26
60 l so	18
60 l through	36
60 l to	47
60 l wall	16
60 l wants	52
60 l was	27
60 l x	42
60 l. \$	-34
60 l. 's	72
60 l. ,	-17
60 l. -	-55
60 l. -ed	-16
60 l. -ing	41
60 l. -ly	26
60 l. 1	-25
60 l. one	-52
60 l. unit	35
60 l. word	42
60 r ,	-19
60 r .	44
60 r all	43
60 r at	52
60 r blocks	29
60 r boards	15
60 r brick	22
60 r bucks	-48
60 r card	-16
60 r dollars	-48
60 r down	63
60 r fifty	-37
60 r flat	18
60 r for	-23
60 r from	-37
60 r high	37
60 r i	18
60 r if	-29
60 r linear	46
60 r miles	-47
60 r not	41
60 r oc	20
60 r of	-18
60 r off	29
60 r on	-40
60 r or	-53
60 r pavers	33
60 r so	43
60 r that	-26
60 r the	-16
60 r then	18
60 r they	21
60 r thick	29
60 r to	-21
60 r up	32
60 r wide	37
60 r x	24
60 r. 's	16
60 r. ,	-19
60 r. .	44
60 r. /	42
60 r. 1	-20
60 r. letter	36
60 r. one	-89
60 r. unit	20
60 r. word	45
60 words round	19
99 figures 2	26
99 l 	-26
99 l \$	-53
99 l -	24
99 l a	-24
99 l an	-71
99 l and	19
99 l at	37
99 l doing	-24
99 l for	-56
99 l from	-16
99 l of	-33
99 l only	24
99 l over	-26
99 l past	48
99 l reads	23
99 l return	22
99 l says	-40
99 l to	44
99 l under	36
99 l was	47
99 l wide	21
99 l with	-17
99 l. #	-26
99 l. \$	-53
99 l. -	24
99 l. -ly	53
99 l. -s	-23
99 l. one	-43
99 l. word	38
99 parts	-67
99 r ,	35
99 r -	21
99 r and	-18
99 r bucks	-40
99 r by	19
99 r five	-16
99 r for	-29
99 r is	-29
99 r next	-45
99 r now	20
99 r or	27
99 r out	44
99 r so	30
99 r to	-22
99 r. ,	35
99 r. -	21
99 r. -s	-40
99 r. one	-23
99 words	38
999 0figures 4	-59
999 figures 3	18
999 l \$	-47
999 l ,	-23
999 l -	-22
999 l .	31
999 l 555	-17
999 l a	-72
999 l about	54
999 l and	70
999 l at	28
999 l be	35
999 l down	-17
999 l extension	-18
999 l for	21
999 l from	-41
999 l going	40
999 l good	-15
999 l in	-44
999 l is	27
999 l it	-22
999 l laid	36
999 l lot	-19
999 l no	38
999 l on	-22
999 l one	-19
999 l out	33
999 l reading	29
999 l reads	42
999 l rise	43
999 l rm	-46
999 l room	-45
999 l section	-34
999 l set	30
999 l side's	34
999 l suite	-22
999 l temp	16
999 l that's	37
999 l the	-71
999 l there	-46
999 l to	32
999 l two	31
999 l was	-26
999 l. \$	-47
999 l. ,	-23
999 l. -	-22
999 l. -ing	52
999 l. -s	87
999 l. .	31
999 l. 1	-46
999 l. unit	-30
999 oh	-33
999 r ,	36
999 r -	-64
999 r .	21
999 r 555	-33
999 r :	-23
999 r a	-61
999 r across	23
999 r already	-21
999 r and	23
999 r area	-42
999 r block	-16
999 r bucks	-30
999 r centres	25
999 r crew	-26
999 r deep	23
999 r down	-17
999 r for	-60
999 r going	39
999 r high	42
999 r i	36
999 r if	-15
999 r k	-39
999 r not	26
999 r number	-26
999 r of	55
999 r off	45
999 r on	32
999 r one	25
999 r over	-51
999 r pickets	18
999 r screws	31
999 r series	-22
999 r so	20
999 r two	-23
999 r when	-19
999 r wide	22
999 r x	30
999 r. 's	39
999 r. ,	36
999 r. -	-64
999 r. .	21
999 r. 1	-60
999 r. :	-23
999 r. letter	26
999 r. unit	-71
999 r. word	23
999 swallowed round	-46
999 words	70
999 words round	58
9999 figures 4	-46
9999 figures 5	-19
9999 l 	-25
9999 l ,	-30
9999 l at	96
9999 l for	-30
9999 l from	-40
9999 l in	-18
9999 l is	-21
9999 l switch	-28
9999 l the	-20
9999 l. #	-25
9999 l. 's	53
9999 l. ,	-30
9999 l. word	-23
9999 r 	-16
9999 r ,	20
9999 r in	-22
9999 r long	56
9999 r the	22
9999 r to	47
9999 r x	-24
9999 r. #	-18
9999 r. ,	20
9999 r. letter	-24
9999 r. unit	-22
9999 words	-26
9999 words round	16
: head 0	37
: head 1	32
: head none	41
Name head none	-107
a a	-34
a aa	40
a about	-66
a across	29
a adds	-52
a aff	21
a after	-27
a again	-22
a ain't	38
a alder	-24
a alive	-19
a all	-28
a along	42
a also	41
a am	-17
a amigos	-46
a an	-34
a anchor	16
a anchors	42
a and	39
a angry	-34
a another	-40
a anything	36
a apart	55
a app	-28
a are	33
a area	-17
a around	16
a as	-33
a ask	-20
a at	18
a away	-52
a b	-44
a baby	-23
a back	73
a backs	-40
a bad	33
a bag	31
a bags	19
a ball	17
a balusters	-29
a banksia	-29
a bar	28
a bars	40
a bases	-28
a bath	42
a bathroom	-48
a baths	42
a batts	-22
a bay	-34
a be	52
a bead	18
a beam	16
a bearing	20
a bedroom	-53
a behind	61
a below	28
a bin	27
a birch	-41
a bit	33
a black	69
a blade	29
a blades	25
a blank	22
a blanks	15
a blind	-19
a block	19
a blocks	74
a blue	-28
a boards	66
a bolt	49
a bolts	54
a bone	-17
a boots	-22
a both	24
a bottom	39
a bought	66
a box	29
a boxes	29
a bracket	45
a brackets	43
a brass	77
a brick	31
a broke	-17
a broken	51
a brown	15
a brushes	27
a bucks	-74
a buddy	-22
a building	15
a built	-42
a bulbs	44
a bumpers	36
a buried	18
a burned	33
a bushing	28
a business	-58
a but	69
a buzzer	-48
a buzzes	-17
a by	40
a c	-43
a cabinets	-23
a cable	-34
a calling	-32
a came	31
a can	66
a can't	-40
a cans	35
a cap	52
a card	-16
a carriage	15
a carton	-24
a case	41
a casing	34
a caulk	24
a ceiling	33
a center	71
a centers	62
a centre	37
a centres	31
a cents	-51
a chance	-28
a check	18
a chimney	48
a chipped	72
a chrome	-16
a circuit	31
a clamps	45
a clear	22
a client	-28
a clips	65
a close	-19
a closed	54
a closet	45
a closets	26
a coat	-64
a code	58
a coffee	41
a coil	29
a cold	29
a color	-28
a colour	-20
a come	-33
a comes	-36
a coming	56
a complete	-39
a concrete	-28
a contact	18
a cord	-31
a corner	59
a cost	-21
a could	-31
a counter	-27
a countertop	-18
a couplings	45
a court	-22
a cove	20
a cover	21
a covers	-35
a crack	-32
a cracked	84
a crew	-33
a d	-18
a damaged	42
a dash	-29
a day	-60
a days	-72
a dead	38
a deal	-18
a deck	34
a decks	26
a deep	102
a degree	25
a degrees	-24
a delivered	19
a den	29
a dentists	-76
a digits	-33
a dimmers	18
a dining	-16
a disposal	-47
a do	21
a does	-28
a dollar	-60
a dollars	-68
a don't	-32
a done	-23
a dont	-23
a door's	40
a doors	21
a double	23
a downstairs	17
a dozen	-76
a drain	17
a drip	34
a drips	-44
a driveway	-30
a drops	59
a dryer	-30
a dumpster	-25
a duplex	16
a each	52
a east	-23
a easy	-34
a edge	55
a eggshell	45
a eighths	-22
a eights	23
a eighty	-27
a either	-33
a elbows	62
a eleventh	-45
a elm	-36
a em	91
a empty	-28
a end	27
a ends	61
a enough	37
a euro	-92
a even	39
a every	33
a everybody	-78
a except	40
a exit	-16
a expansion	31
a faced	-27
a factory	21
a fall	30
a falls	-27
a family	17
a fan	21
a far	57
a faucet	-50
a fault	-20
a fence	29
a fifteens	17
a fifty	18
a filter	33
a find	-53
a fine	26
a fingers	-42
a finish	-21
a finished	30
a first	-24
a fix	-53
a fixed	-25
a flapper	-55
a flat	48
a flex	-36
a flicker	51
a flush	-24
a foam	-31
a foot	59
a footer	17
a footers	63
a footings	22
a for	32
a forget	-25
a fours	26
a framed	-49
a friday	40
a fridays	-34
a front	35
a frost	-33
a ft	-18
a full	35
a furnace	-41
a g	21
a gallon	-35
a gang	-51
a garage	43
a gary	30
a gasket	33
a gate's	-17
a gauge	22
a get	-51
a gets	-39
a gfcis	39
a give	63
a glass	63
a glue	-16
a glued	-41
a go	29
a gone	-32
a gonna	24
a good	61
a grade	52
a grate	-36
a grease	-20
a green	21
a grille	-72
a grit	24
a ground	-45
a grout	31
a gun	-26
a guy	-63
a guys	-76
a half	37
a hall	124
a hand	-28
a handle	-86
a hanger	-20
a hangers	93
a hanging	22
a happy	36
a hardware	18
a has	-82
a hatch	-26
a have	34
a he	-62
a he's	-71
a head	-68
a heavy	25
a held	-22
a hes	-33
a high	47
a him	-56
a hinge	25
a hire	-34
a hit	-40
a holding	26
a hole	-72
a home	-15
a hook	-18
a hooks	34
a hose	16
a hot	24
a hour	-17
a house	41
a hums	-42
a hundreds	-36
a hung	-22
a hydro	-41
a i	-43
a i'm	-27
a i've	23
a if	-34
a in	18
a inch	38
a inches	34
a inside	-21
a instead	51
a into	42
a iron	-39
a is	-43
a ish	-41
a island	-32
a it	-43
a it'd	-21
a it'll	-20
a it's	-25
a jacks	25
a job	-20
a joist	19
a just	23
a k	-66
a keeps	-17
a key	-54
a kid	-27
a kids	-25
a killed	-25
a kinds	-61
a kit	48
a knobs	38
a label	16
a labeled	28
a laid	31
a lamp	28
a landing	17
a laptop	-20
a larch	-45
a laser	56
a last	-40
a latest	-61
a lath	-22
a laundry	18
a lavs	30
a lay	33
a layer	-82
a layers	40
a layout	17
a lazy	-25
a leaking	20
a leaks	-34
a leaves	29
a left	42
a leg	68
a legs	55
a let	-24
a level	-28
a lever	21
a lid	39
a lift	-67
a light	36
a lights	25
a like	-69
a lime	22
a linear	46
a lintel	19
a live	24
a ln	-21
a lol	-26
a long	113
a longer	24
a look	-58
a lot	-64
a lunch	-19
a m10	19
a mailbox	-22
a make	-28
a man	-33
a manifold	28
a manual	-30
a maple	-27
a march	-20
a mat	-35
a mate	-58
a matt	39
a max	51
a men	-37
a metal	-48
a meter	44
a middle	61
a miles	-47
a mill	-34
a minimum	30
a minute	-46
a missing	16
a mixing	19
a mm	23
a monday	-23
a more	85
a morning	-78
a mosaic	27
a move	50
a moved	-66
a moves	-35
a muppet	-32
a must	-15
a n	25
a nails	53
a need	23
a needs	-60
a new	42
a next	-36
a night	-65
a nil	-32
a nine	-54
a ninety	16
a noon	-48
a north	32
a nos	35
a nose	37
a not	-32
a nothing	-49
a number	19
a nuts	45
a o'clock	-84
a oc	57
a oclock	-20
a off	28
a office	-28
a offset	-32
a oh	-27
a old	47
a ones	19
a opened	23
a opening	22
a openings	21
a order	57
a ordered	37
a other	-53
a ought	37
a outlets	72
a outside	-37
a outta	-27
a oven	15
a own	15
a owner	16
a packers	-73
a painters	-21
a palings	19
a pan	29
a panel	-71
a panels	58
a paper	-28
a park	-34
a part	-56
a parts	19
a pass	-28
a passed	-27
a past	-66
a patch	-16
a pattern	-48
a pavers	48
a pendants	40
a per	71
a permit	-20
a picked	18
a pickets	21
a pieces	17
a piers	26
a pinched	-24
a pine	54
a pinned	20
a pins	21
a pipe	33
a place	-34
a planks	17
a plaster	33
a plate	32
a plates	37
a play	-47
a plenty	63
a plumber	-20
a ply	-30
a plywood	34
a pm	-44
a pocket	15
a podium	-59
a pole	-82
a pop	-26
a porch	23
a post	32
a potato	-56
a pound	-24
a powder	-19
a pressure	16
a primer	50
a proud	22
a pull	19
a pulled	-20
a pulls	42
a punch	-23
a punched	-16
a put	-25
a quart	16
a quid	-40
a quiet	-22
a quit	-34
a rack	16
a radiator	19
a radio	-93
a rafters	45
a rain	-18
a raise	55
a ran	38
a rang	-37
a range	-45
a ready	-52
a rear	-24
a receps	20
a receptacle	29
a receptacles	50
a reducer	63
a remain	22
a replaced	-20
a required	-21
a reset	-17
a ridge	22
a ring	45
a rise	22
a risers	44
a rolled	-20
a roller	23
a roof	-22
a room	28
a rotten	16
a rubber	32
a run	22
a rungs	18
a running	25
a runs	-17
a safe	53
a sags	-25
a said	-68
a sand	22
a satin	33
a says	-53
a school	-24
a sconces	29
a score	-28
a scratched	18
a screen	27
a screens	16
a screwed	29
a screws	63
a scribed	-19
a seal	16
a sealed	27
a second	-67
a send	-28
a series	-26
a seven	-26
a seventeen	-22
a seventh	-41
a seventy	46
a sharp	-51
a she	42
a she's	-52
a shed	46
a shelf	44
a shift	-61
a shims	33
a short	93
a shot	-44
a should	22
a show	-20
a showed	-41
a shower	-40
a shows	-23
a shut	-20
a side	23
a signed	-28
a sill	29
a single	21
a sink	49
a sister	35
a site	31
a sits	-22
a six	18
a sixes	-27
a sixteen	73
a sixteenths	-18
a sixty	-19
a skip	-21
a slab	33
a slabs	-16
a slats	-54
a slope	73
a slow	-65
a smells	-15
a so	34
a sockets	-18
a soft	18
a sold	-17
a some	46
a somebody	-16
a something	-31
a sorry	-26
a sound	-17
a south	24
a space	32
a spaces	26
a spare	47
a spares	22
a split	-15
a spout	25
a spring	-51
a square	-58
a squeaks	30
a st	-32
a stainless	28
a star	-21
a stars	-60
a starts	-52
a station	16
a step	-48
a stick	24
a sticks	-40
a still	-33
a stock	36
a stone	-29
a stool	-40
a stopper	19
a stops	-45
a storm	-22
a story	-24
a straight	-45
a strike	20
a stroke	-25
a stud	31
a studs	101
a style	23
a suction	33
a sunday	-57
a supplier	-23
a supply	37
a swap	-38
a sweep	41
a switch	66
a switches	19
a tag	-23
a take	31
a takes	23
a tall	45
a tap	45
a tape	50
a tee	34
a template	-33
a ten	-17
a tens	31
a tested	-18
a thank	-31
a that	-23
a their	-24
a then	-38
a there's	-25
a theres	27
a these	16
a they	-39
a they're	76
a thick	74
a thing	-76
a things	-83
a think	-25
a thirty	20
a those	-34
a though	16
a thousand	-48
a through	-18
a thumb	-26
a thursday	-19
a tied	-15
a ties	-34
a tile	40
a tiles	50
a times	-150
a toe	-31
a together	-70
a toggles	24
a toilet	37
a toilets	42
a too	-64
a top	21
a total	56
a touch	-29
a towel	33
a traps	30
a travelers	-21
a tray	-15
a tread	-52
a treads	32
a trees	16
a trip	27
a tripped	-29
a trips	-42
a truck	23
a tub	40
a tube	68
a tuesday	-40
a turned	-43
a twenty	30
a twos	40
a type	21
a u	-35
a unit	-30
a up	25
a upper	17
a upstairs	-27
a us	-78
a use	25
a used	29
a v	-24
a valve	41
a van	34
a vanities	18
a vanity	-28
a vent	27
a vents	-20
a vinyl	38
a volt	24
a wafers	24
a wall	55
a walls	21
a was	-28
a washers	28
a waste	52
a watch	-18
a water	-59
a way	-81
a ways	-61
a wear	-16
a wednesday	34
a week	-43
a weekend	23
a wet	-30
a whatever	-33
a which	41
a white	27
a who	-25
a whole	-16
a wide	67
a will	47
a window	-36
a windows	20
a wiped	-28
a wire's	42
a wired	17
a within	-16
a wood	-17
a word	-42
a works	-52
a worth	17
a would	-43
a wouldn't	-80
a wrong	-18
a wrongs	-36
a x	61
a yard	-25
a yesterday	23
a yet	-55
a you	-32
a you're	55
a zero	-19
a zip	-62
b a	-28
b about	31
b above	36
b absent	-67
b ac	23
b across	18
b actually	15
b add	89
b addendum	-16
b address	-32
b adds	31
b adhesive	41
b against	27
b air	16
b allow	74
b already	20
b alright	-36
b amp	94
b amps	85
b an	-46
b anchors	30
b and	38
b another	-34
b anti	31
b any	-17
b anything	45
b apart	39
b apartment	-54
b apiece	32
b appliance	20
b apt	-33
b architect	45
b are	51
b around	-21
b arrived	51
b arsenal	-27
b as	24
b asked	48
b at	15
b b	-48
b badge	-20
b bags	27
b bakery	-18
b balusters	-21
b bar	62
b basement	-42
b basin	21
b bath's	21
b battery	-21
b bay	-37
b bays	-78
b bead	24
b beam	-26
b bearing	-27
b beat	-32
b because	26
b bed	-53
b bedroom	-75
b bedrooms	-25
b been	15
b below	-28
b belts	26
b bench	22
b bent	35
b better	38
b between	-31
b big	-42
b billed	-47
b bin	-47
b birdied	-52
b bit	-15
b black	31
b bldg	-42
b blew	27
b blinds	23
b blood	-88
b blower	34
b boards	48
b bolt	16
b bolted	22
b bolts	53
b booked	-49
b boss	-48
b both	-69
b bought	57
b bout	45
b box	-33
b boxes	30
b boy	-20
b bracket	30
b brackets	52
b break	-46
b breaker	-42
b breaker's	50
b breakers	50
b brick	16
b bring	137
b bringing	41
b broke	65
b brought	67
b brushed	-21
b buckets	32
b bucks	22
b building	-39
b built	-28
b bulb	34
b bumpers	40
b bunnings	-62
b burned	38
b but	34
b buy	89
b c	-20
b cable	29
b call	29
b calls	50
b cam	-62
b came	64
b camera	-35
b can't	15
b cans	28
b card	32
b carpet	-33
b carton	34
b case	21
b casing	-34
b cat	-18
b catch	-26
b cats	-32
b caulk	-25
b cause	23
b cbd	15
b cell	-34
b center	48
b centres	25
b cfm	33
b ch	-52
b change	23
b changed	56
b channel	-64
b chapter	-20
b charge	-46
b charged	-62
b checked	-17
b chelsea	-27
b chimney	-38
b circuit	-85
b class	-40
b cleaned	25
b clearance	18
b clip	15
b clips	41
b close	23
b closer	40
b closes	-50
b co	25
b coat	-20
b code	-19
b code's	-67
b cold	37
b collar	55
b color	-17
b color's	-15
b colour	-30
b column	-23
b come	-28
b coming	-16
b company	-17
b composite	20
b confirmation	-19
b control	40
b copper	27
b cord	16
b corner	49
b counter	-36
b counter's	27
b county	-36
b cover	37
b covers	15
b crack	16
b cracked	32
b crane's	-27
b crew	-16
b crowned	53
b cut	85
b cutout's	20
b cylinder	29
b dash	-41
b day	-91
b days	-21
b dead	27
b deck	30
b deep	29
b degrees	26
b den	62
b detail	-39
b diagonals	67
b dialed	20
b did	-39
b didn't	-27
b dining	-25
b dip	-22
b display	-58
b do	-61
b dock	-25
b dog	-24
b doing	-70
b don't	-37
b done	28
b door	-52
b doors	-23
b double	-34
b down	65
b downspouts	19
b downstairs	41
b dozen	-36
b drain	17
b draw	38
b drawer	-46
b drawing	34
b drew	-22
b drop	36
b dropped	18
b drops	38
b drove	42
b dry	28
b drywall	-27
b duct	23
b dye	-18
b e	-25
b each	58
b edge	35
b egress	-55
b eight	27
b eighteen	38
b eighth	19
b eighths	79
b eighty	-38
b elbows	26
b electrician	-41
b elevation	-25
b elevator	-53
b eleven	18
b end	44
b ends	-28
b engine	-25
b entry	-28
b episode	-20
b epoxy	-43
b error	-49
b exam	-32
b except	29
b exit	-39
b expires	-93
b exterior	-46
b failed	-19
b fall	-19
b falls	-32
b far	50
b feeder	-18
b feeder's	-28
b feeds	-21
b feet	37
b fell	59
b field	-39
b fifteen	34
b fifty	44
b figure	27
b figured	-17
b final	-28
b fire	21
b fit	-50
b fitted	-19
b fix	-48
b fla	18
b flange	31
b flashes	-78
b flat	-54
b flight	-57
b flue	47
b flush	-32
b footers	36
b footing	20
b footing's	39
b for	-17
b formula	-23
b forty	19
b found	55
b four	37
b fourth	-50
b frame	-41
b framed	28
b framing	-24
b fridge	23
b from	-28
b ft	18
b full	20
b g	-33
b gallon	39
b gallons	33
b game	-31
b gap	50
b garage	61
b gas	-27
b gasket	15
b gaskets	22
b gate	-46
b gate's	-17
b gauge	31
b gauged	44
b gave	24
b generator	81
b get	66
b gets	52
b getting	24
b give	-43
b glass	20
b glue	60
b glued	17
b go	29
b goal	-46
b going	-16
b got	48
b gr	43
b grab	61
b great	-18
b green	-50
b grid	19
b guide	-17
b guys	-40
b had	34
b half	36
b hall	41
b hallway	32
b handrail's	17
b hang	43
b hangers	46
b hard	33
b hardware	-37
b has	54
b hatch	-36
b have	57
b he	-91
b he'll	-46
b he's	-131
b head	54
b header	39
b header's	45
b headroom's	54
b heads	19
b hearth	21
b heater	15
b heater's	46
b held	27
b her	-41
b here	-50
b hes	-72
b high	-17
b highway	-31
b him	-81
b hinge	38
b hinges	-41
b his	-100
b hit	-18
b hits	30
b hole's	16
b holes	18
b homeruns	-23
b hood	35
b hour	-58
b hours	-31
b how	29
b humidity	73
b hundred	22
b hung	67
b hurricane	17
b hwy	-66
b i'd	38
b i'll	26
b i'm	21
b i've	31
b if	40
b im	-33
b in	-31
b inch	56
b inches	16
b inside	39
b inspector	-35
b install	-23
b instead	25
b insulation	-36
b into	20
b invoice	-44
b island	58
b it'll	36
b item	-29
b items	-41
b jan	29
b job	-44
b joint	-17
b joists	57
b jumper	-71
b just	105
b k	-38
b kay	-17
b keep	23
b kept	-28
b key	-60
b keyed	-52
b keynote	-21
b kick	38
b kid's	-23
b kids	61
b kind	56
b kitchen	57
b kits	36
b knife	-17
b knobs	16
b knock	-27
b l	29
b l1	23
b label	23
b ladder	-15
b lags	17
b laid	54
b lands	-29
b lane	-28
b lap	102
b last	34
b lb	40
b least	68
b leaves	75
b led	35
b left	38
b leg	87
b lengths	18
b less	32
b level	-85
b light	-17
b lights	50
b line	-20
b linen	17
b little	-31
b live	16
b living	-26
b load	28
b lobby	34
b local	-40
b lock	20
b lockbox	-26
b log	-39
b longer	-16
b look	-31
b loop	-42
b lot	-101
b lounge	48
b low	45
b lumber	-23
b lvl	-35
b m	-54
b make	59
b man	-38
b marble	47
b marcy	-22
b margin's	-26
b mark	-57
b marker	-21
b married	-22
b mate	-16
b max	40
b maximum	43
b maybe	41
b measure	-41
b measured	17
b medallion	16
b medium	58
b meeting	-35
b meter	49
b metres	36
b mike	-24
b mile	-24
b millimeter	17
b million	-35
b mine	-42
b minus	32
b minutes	-19
b mirror	23
b mirror's	47
b miss	-15
b missing	52
b mix	-19
b mm	43
b mode	-48
b moisture	44
b moisture's	45
b mon	-67
b moon	-30
b more	28
b morning	21
b mortar	24
b mounted	24
b moved	-66
b mrs	-36
b mud	-25
b must	33
b my	-81
b nah	-16
b nail	25
b nailed	38
b nails	63
b nd	-17
b near	-28
b need	105
b needs	85
b net	-37
b never	17
b next	-33
b nfpa	-20
b niche	17
b nine	-16
b nineteen	-28
b ninety	19
b no	63
b nobody	-43
b none	34
b north	48
b not	20
b note	-40
b nothing	41
b now	67
b number	-177
b number's	-63
b nursery	20
b o	17
b odds	-21
b of	48
b off	-16
b office	-29
b offset	34
b oh	-36
b ohms	48
b oil	-37
b ok	-24
b okay	-58
b old	-62
b on	-23
b only	82
b open	-29
b opened	21
b opening	49
b opening's	28
b opens	-50
b option	-25
b or	-16
b ordered	65
b oughta	34
b our	-22
b outlet	-21
b outside	30
b oven	39
b owes	-25
b p	-41
b pack	-69
b packed	40
b packs	67
b pad	33
b page	-56
b paid	-32
b paint	-24
b paint's	-17
b painted	-38
b panel's	35
b panels	16
b paper	-41
b par	-36
b parked	-37
b part	-29
b passed	-31
b patch	42
b pay	-47
b pcs	-48
b percent	20
b permit	-20
b pete	-30
b phase	-34
b pick	52
b pickets	103
b pieces	42
b pier	-46
b pin	-80
b pipe	51
b pitch	29
b place	-43
b plans	54
b plant	45
b plaster	36
b plastic	-24
b plates	26
b play	-31
b please	67
b plot	-44
b plug	25
b plumb	20
b plus	73
b po	-43
b point	39
b pole	-46
b poly	-21
b popped	-48
b porch	17
b port	-26
b post	26
b pour	-38
b poured	32
b premium	-27
b press	-23
b prob	-20
b psalm	-41
b psi	48
b pu	26
b pull	26
b pulled	-54
b pulling	55
b pump	-17
b pumped	48
b put	84
b qt	19
b qty	62
b quarter	-15
b quarters	23
b quoted	-56
b r	-46
b rack	-58
b rafters	64
b rail	26
b rain	16
b ramp	18
b ran	25
b range	39
b rapid	-39
b rate's	-21
b rated	45
b rcbo	17
b re	-39
b read	49
b reading	55
b reads	67
b real	28
b rebuilt	21
b receptacles	20
b ref	-18
b relief	58
b rental	-69
b replace	77
b replaced	20
b report	-55
b reset	28
b rest	16
b return	63
b return's	36
b reveal's	27
b rfi	-25
b rh	49
b right	-30
b ring	-19
b rip	38
b ripped	29
b rise	64
b riser	-57
b rm	-76
b road	-25
b rock	43
b rod	30
b rolled	-52
b rolls	-27
b roof	-25
b room	-41
b rough	19
b roughed	45
b round	-27
b route	-18
b row	-52
b rtu	-73
b rubber	-25
b running	35
b s	19
b sags	38
b same	-29
b sand	-43
b sanded	-34
b sash	16
b saturday	-37
b saves	-34
b saw	-28
b say	30
b saying	35
b says	27
b scale	-75
b sch	-56
b screwed	37
b screws	53
b seal	-37
b seat	38
b sec	-38
b second	25
b section	-41
b see	-38
b send	-45
b sent	60
b serial's	-16
b served	-41
b set	121
b sets	-41
b setting	-34
b seventeen	16
b seventy	43
b she	-57
b she'll	-53
b she's	-76
b shear	19
b shed	-49
b sheet	-60
b shelf	17
b shellac	17
b shelves	40
b shelving	-47
b shift	-18
b shim	-37
b shld	19
b shoe	17
b short	130
b shorted	71
b should	65
b should've	64
b shower	-37
b shows	53
b side	38
b side's	36
b sill	52
b sill's	36
b since	-78
b sister	78
b site	-49
b six	37
b sixteen	39
b sixty	49
b slab	49
b slump	92
b smoko	-26
b snapped	-16
b snow	22
b so	39
b sockets	20
b sold	40
b some	29
b somebody	70
b something	-27
b sometime	-15
b somewhere	81
b song	-21
b sorry	31
b south	20
b space	19
b spaced	39
b spacing	67
b span's	21
b spare	35
b spec	87
b spot	-19
b spring's	-22
b spurs	-37
b square	37
b squeak	35
b stage	-38
b stain	-16
b stainless	32
b stair	-57
b standing	26
b start	-25
b starts	-19
b stat	32
b state	-22
b static	41
b static's	33
b station	-16
b step	-16
b still	33
b stitch	-34
b stock	40
b stone	52
b stops	25
b stringer	16
b strip	-17
b strips	28
b stub	52
b stud	18
b studio	-22
b studs	76
b stuff	65
b style	20
b sub	-27
b subcool's	26
b subfloor's	30
b submittal	-17
b suite	-40
b summer	-35
b superheat	51
b superheat's	47
b supplier	23
b supply	48
b supply's	17
b swap	44
b swapped	36
b sweet	-35
b t	18
b table	-100
b tag	-54
b takes	-41
b tank's	-19
b tap	46
b tape	30
b tel	-20
b temp	84
b ten	-36
b tenant	-27
b terms	-73
b tested	62
b th	-44
b than	50
b that'll	-16
b that's	-22
b their	-26
b then	-51
b there	-19
b there's	31
b thermostat	39
b thermostat's	49
b they'll	-26
b they're	-65
b think	-15
b thinks	-42
b thinset	26
b thirteen	80
b thirty	36
b this	-49
b though	39
b three	30
b throw	51
b throwing	-36
b thurs	-19
b thursday	-35
b ticket	-29
b tied	17
b ties	53
b tight	26
b til	-34
b tile	60
b tiles	24
b till	-35
b time	-31
b times	-61
b to	35
b toast	36
b today	-19
b toilet	56
b tomorrow	-32
b too	18
b took	45
b torque	45
b torqued	37
b total	55
b town	16
b tracking	-49
b trailer	-55
b trap	36
b tread	-40
b treads	44
b trench	21
b trim	17
b trimmed	46
b tripped	-38
b truck	30
b truck's	-65
b tube	62
b tubes	24
b tuesday	16
b turned	-53
b twelve	49
b twenty	52
b twice	28
b two	37
b txt	-35
b type	-70
b u	-80
b under	31
b unit	-92
b united	-19
b units	-35
b up	16
b uppers	20
b upstairs	53
b us	17
b used	111
b utility	-16
b valve	83
b van	72
b vanity	45
b vent	35
b version	-30
b vikings	-71
b volt	-18
b volts	62
b w	18
b wait	21
b waiting	41
b walk	-32
b wall	73
b wall's	36
b wallpaper	-34
b walnut	-49
b want	50
b wanted	52
b wants	89
b wardrobe	-54
b was	20
b washer	17
b waste	21
b water's	51
b way	-47
b we	45
b we've	18
b wednesday	-27
b week	-33
b went	40
b wet	39
b when	45
b white	31
b whole	-18
b wide	57
b width	43
b will	22
b window	-50
b windows	27
b wire	20
b wire's	43
b with	36
b wo	-23
b won't	55
b wood	-39
b work	-29
b working	-18
b works	-17
b worn	16
b worth	-21
b wrong	-16
b x	48
b yard	-59
b yeah	-18
b your	-42
b zero	-56
b zone	-89
bare 1	-56
bare 2	57
bare 3	19
claims 1	18
claims 2	-38
form 0figures 2	-15
form 0figures 4	-59
form figures 1	17
form figures 2	32
form figures 3	18
form figures 4	-46
form figures 5	-53
form oh	-33
form parts	54
form swallowed round	-43
head 0	26
head 1	84
head 2	23
head 3	52
head none	-27
l of cars	-60
l of clock	-113
l of kin	-23
l of media	21
l of money	-44
l of papers	-37
l of past	32
l of phones	-71
l of roads	-110
l of school	-40
l of sport	-78
l1 	37
l1 
	-121
l1 #	-31
l1 \$	-110
l1 (	27
l1 +	61
l1 ,	43
l1 -	-52
l1 .	24
l1 /	15
l1 1	-16
l1 3	-17
l1 555	-17
l1 9	-23
l1 :	78
l1 @	18
l1 about	32
l1 above	17
l1 add	63
l1 addendum	-16
l1 adds	31
l1 after	-52
l1 all	69
l1 an	-83
l1 and	91
l1 another	-30
l1 apartment	-29
l1 apt	-33
l1 are	28
l1 at	34
l1 b	-19
l1 bath	-85
l1 bay	-101
l1 be	62
l1 bed	-63
l1 bedroom	-85
l1 before	-45
l1 better	19
l1 big	-31
l1 bldg	-49
l1 bottom	-45
l1 bought	88
l1 bout	45
l1 box	-24
l1 bracket	35
l1 breaker	-66
l1 bring	120
l1 broke	-16
l1 building	-44
l1 but	22
l1 buy	105
l1 by	34
l1 called	-18
l1 came	22
l1 case	19
l1 cat	-23
l1 catch	-22
l1 ch	-52
l1 change	25
l1 channel	-38
l1 chapter	-20
l1 circuit	-86
l1 class	-19
l1 closet	40
l1 coat	-42
l1 code	-78
l1 code's	-55
l1 count	-27
l1 counted	29
l1 cracked	27
l1 cut	70
l1 d	-22
l1 dash	-29
l1 day	-105
l1 detail	-31
l1 dock	-25
l1 doing	-38
l1 done	30
l1 door	-71
l1 double	-29
l1 down	18
l1 drawer	-33
l1 drove	45
l1 e	-22
l1 each	-46
l1 edge	40
l1 eight	-15
l1 elevator	-20
l1 eleven	-21
l1 error	-49
l1 every	-24
l1 exit	-46
l1 extension	-19
l1 exterior	-26
l1 f	-26
l1 first	-28
l1 five	-36
l1 fla	18
l1 flat	-40
l1 floor	-50
l1 formula	-23
l1 found	70
l1 four	-36
l1 fourteen	-61
l1 framed	36
l1 from	-31
l1 full	43
l1 gap	26
l1 garage	78
l1 get	148
l1 gets	50
l1 go	42
l1 going	40
l1 good	-43
l1 got	104
l1 grab	74
l1 grade	-39
l1 had	63
l1 hall	65
l1 hang	23
l1 has	88
l1 have	75
l1 he's	-81
l1 header's	21
l1 her	-26
l1 highway	-17
l1 him	17
l1 hole	-52
l1 hung	47
l1 in	-56
l1 inch	64
l1 install	-21
l1 invoice	-38
l1 is	50
l1 it	41
l1 it's	-26
l1 item	-28
l1 job	-37
l1 just	90
l1 key	-56
l1 keynote	-21
l1 kitchen	57
l1 laid	36
l1 lane	-28
l1 last	22
l1 least	68
l1 leaves	68
l1 left	50
l1 level	-66
l1 lift	-20
l1 line	-51
l1 local	-40
l1 longer	-16
l1 loop	-43
l1 lot	-105
l1 m	-45
l1 mark	-51
l1 marker	-21
l1 married	-22
l1 mate	-16
l1 maybe	84
l1 me	41
l1 measures	30
l1 meter	-15
l1 minus	34
l1 miss	-15
l1 missing	-17
l1 mode	-48
l1 nailed	16
l1 nd	-35
l1 need	123
l1 needs	79
l1 net	-45
l1 new	-84
l1 nine	-20
l1 nineteen	-25
l1 not	45
l1 note	-40
l1 now	59
l1 number	-196
l1 number's	-57
l1 of	-40
l1 off	-19
l1 oh	-29
l1 old	-77
l1 on	-23
l1 one	-61
l1 ones	32
l1 only	69
l1 opened	-24
l1 option	-15
l1 or	-27
l1 ordered	37
l1 ought	-37
l1 out	91
l1 p	-42
l1 page	-47
l1 paid	-19
l1 panel's	35
l1 phase	-18
l1 pick	-63
l1 pin	-20
l1 plant	45
l1 plate	31
l1 plot	-44
l1 plus	63
l1 po	-21
l1 port	-28
l1 poured	27
l1 press	-19
l1 pressure's	-25
l1 primed	-16
l1 psalm	-41
l1 pull	52
l1 pulling	56
l1 put	69
l1 quarter	56
l1 quoted	-46
l1 r	-62
l1 rack	-25
l1 ran	42
l1 rate's	-21
l1 rated	41
l1 read	53
l1 reading	36
l1 reads	38
l1 red	43
l1 replaced	51
l1 return	22
l1 returned	21
l1 rev	-21
l1 rfi	-25
l1 right	-46
l1 rise	43
l1 riser	-57
l1 rm	-101
l1 road	-20
l1 room	-63
l1 row	-27
l1 rtu	-17
l1 running	35
l1 saves	-34
l1 say	42
l1 says	46
l1 second	-28
l1 section	-41
l1 sent	33
l1 set	81
l1 she's	-39
l1 sheet	-41
l1 shelf	-29
l1 short	104
l1 shower	-31
l1 shows	36
l1 side's	36
l1 since	-39
l1 so	103
l1 solid	-22
l1 spacing	26
l1 span's	21
l1 spec	31
l1 spurs	-37
l1 square	-46
l1 stage	-38
l1 stair	-35
l1 static's	20
l1 station	-16
l1 step	-55
l1 still	73
l1 strike	-45
l1 suite	-28
l1 superheat	35
l1 swapped	18
l1 sweet	-35
l1 switch	-56
l1 t	26
l1 table	-31
l1 take	22
l1 takes	-45
l1 temp	35
l1 ten	-23
l1 than	47
l1 that	-76
l1 the	-86
l1 then	-27
l1 there	-24
l1 theres	16
l1 thing	-33
l1 this	-30
l1 ticket	-20
l1 til	-31
l1 till	-62
l1 times	28
l1 to	60
l1 tomorrow	28
l1 took	40
l1 tread	-34
l1 treads	30
l1 truck	-57
l1 turned	-40
l1 twelve	-27
l1 two	40
l1 type	-67
l1 under	80
l1 unit	-132
l1 up	76
l1 us	41
l1 use	35
l1 used	97
l1 vanity	43
l1 version	-30
l1 wall	68
l1 wall's	58
l1 want	51
l1 wanted	35
l1 wants	116
l1 was	53
l1 we're	60
l1 well	36
l1 were	-29
l1 wide	21
l1 with	20
l1 wo	-23
l1 wrong	-15
l1 x	73
l1 you	-22
l1 your	-46
l1 zone	-87
l1 £	-52
l1. #	32
l1. \$	-110
l1. 's	88
l1. (	27
l1. +	61
l1. ,	43
l1. -	-52
l1. -ed	59
l1. -ing	40
l1. -ly	64
l1. -s	60
l1. .	24
l1. /	-109
l1. 1	-68
l1. :	78
l1. @	18
l1. Name	-107
l1. letter	-41
l1. one	-113
l1. unit	-51
l1. £	-52
l2 	-16
l2 
	40
l2 '	58
l2 (	51
l2 ,	31
l2 -	20
l2 1	-62
l2 10	26
l2 118	-25
l2 18	17
l2 3	-35
l2 31	-58
l2 34	28
l2 36	16
l2 400	-19
l2 5	-17
l2 55	16
l2 555	-34
l2 6	-41
l2 60	22
l2 600	33
l2 68	49
l2 7	-20
l2 9	46
l2 a	-146
l2 address	-26
l2 allow	51
l2 alright	-17
l2 an	-45
l2 anything	32
l2 are	34
l2 asked	30
l2 at	-97
l2 bags	22
l2 bar	16
l2 basement	46
l2 bath	28
l2 be	50
l2 bedroom	23
l2 billed	-47
l2 bolts	16
l2 book	23
l2 bottom	31
l2 box	27
l2 boxes	65
l2 breaker's	27
l2 broke	85
l2 built	-19
l2 burned	36
l2 by	-67
l2 c	-27
l2 call	72
l2 calls	36
l2 change	-51
l2 changed	30
l2 charged	-62
l2 chimney	-39
l2 class	-18
l2 closer	33
l2 closes	-37
l2 code	85
l2 column	-26
l2 come	-17
l2 comes	26
l2 coming	-34
l2 corner	29
l2 county	-19
l2 cracked	16
l2 cut	70
l2 dip	-22
l2 dog	-35
l2 don't	-85
l2 done	39
l2 door	-18
l2 double	-39
l2 down	30
l2 dropped	22
l2 dryer	-26
l2 eight	32
l2 eighths	20
l2 elbows	16
l2 em	26
l2 epoxy	-39
l2 except	-25
l2 fan	-19
l2 fault	-20
l2 feet	-26
l2 fifteen	15
l2 fifty	-17
l2 first	35
l2 fitted	23
l2 flue	52
l2 flush	-21
l2 foot	48
l2 for	-52
l2 forty	-42
l2 four	53
l2 fourth	-46
l2 friday	-36
l2 from	-48
l2 ft	38
l2 full	-48
l2 g	-33
l2 gate	-25
l2 gauge	17
l2 gave	58
l2 get	-28
l2 give	-27
l2 glass	38
l2 gone	15
l2 good	41
l2 gotta	30
l2 grab	-21
l2 grid	22
l2 guy	41
l2 half	-26
l2 hand	16
l2 hardware	-53
l2 have	35
l2 he	-65
l2 he's	-33
l2 head	66
l2 header	32
l2 header's	19
l2 heads	-25
l2 held	27
l2 her	-59
l2 here	-42
l2 hes	-30
l2 high	-32
l2 hinges	-35
l2 his	-27
l2 hole	18
l2 house	-25
l2 humidity	55
l2 hung	17
l2 i	104
l2 i'd	40
l2 i'll	20
l2 i'm	38
l2 in	-49
l2 inches	53
l2 inside	30
l2 instead	62
l2 it'll	47
l2 joists	39
l2 k	-16
l2 kit	35
l2 kitchen	-28
l2 left	29
l2 leg	73
l2 lengths	32
l2 level	-30
l2 lock	23
l2 long	22
l2 loose	55
l2 low	63
l2 main	17
l2 make	84
l2 max	18
l2 maybe	-31
l2 me	-29
l2 meter	15
l2 mil	-49
l2 mile	-21
l2 minute	-35
l2 missing	64
l2 mm	46
l2 monday	34
l2 more	37
l2 nails	19
l2 need	19
l2 nineteen	-32
l2 no	-104
l2 north	24
l2 not	-86
l2 number	-31
l2 of	-64
l2 of cars	-68
l2 of clock	-56
l2 of kin	-54
l2 of money	-102
l2 of past	-17
l2 of phones	45
l2 of roads	31
l2 of school	-65
l2 of services	-17
l2 of sport	-23
l2 off	-84
l2 office	-24
l2 offset	34
l2 oh	-52
l2 ok	-27
l2 on	-37
l2 only	77
l2 opening	31
l2 out	-43
l2 owes	-25
l2 pack	-24
l2 paid	-16
l2 paint	-18
l2 panel	-20
l2 passed	-25
l2 past	-17
l2 pick	81
l2 picked	36
l2 pickets	84
l2 pipe	44
l2 plan	29
l2 plaster	24
l2 plate	-34
l2 play	-25
l2 please	19
l2 pressure's	39
l2 put	76
l2 quarter	-28
l2 r	-52
l2 rail	37
l2 ran	-42
l2 real	37
l2 red	-49
l2 right	24
l2 rod	21
l2 room	-41
l2 rough	23
l2 round	-34
l2 rtu	-47
l2 sand	-26
l2 sanded	-67
l2 says	18
l2 scale	-22
l2 screws	49
l2 see	-27
l2 set	74
l2 sets	-48
l2 seven	-24
l2 she	-49
l2 she'll	-37
l2 she's	-37
l2 sheets	-21
l2 shelf	41
l2 short	47
l2 shorted	66
l2 shot	22
l2 should	50
l2 sill	42
l2 six	-21
l2 sixteen	22
l2 sixty	20
l2 smoko	-16
l2 sockets	20
l2 somewhere	65
l2 sorry	17
l2 space	19
l2 spec	66
l2 stair	-35
l2 stairs	-37
l2 start	17
l2 step	18
l2 sticks	33
l2 still	-25
l2 studs	53
l2 sub	-27
l2 swap	22
l2 table	-55
l2 take	-23
l2 tape	35
l2 temp	31
l2 ten	-45
l2 tested	62
l2 that	36
l2 that's	-23
l2 the	-105
l2 them	15
l2 there	-26
l2 there's	50
l2 thermostat	22
l2 thermostat's	42
l2 third	-21
l2 thirty	20
l2 three	43
l2 thursday	-54
l2 tile	22
l2 time	-36
l2 to	-32
l2 toast	31
l2 tomorrow	-61
l2 torqued	37
l2 trap	43
l2 twenty	28
l2 two	-38
l2 type	-39
l2 u	-36
l2 unit	-17
l2 used	-17
l2 wall	21
l2 wall's	-28
l2 walls	-33
l2 wants	-26
l2 was	-92
l2 washer	38
l2 we	73
l2 we've	18
l2 went	46
l2 were	46
l2 which	22
l2 white	22
l2 width	43
l2 will	34
l2 window	-42
l2 windows	28
l2 zero	-66
l2. #	-16
l2. '	58
l2. 's	22
l2. (	51
l2. ,	31
l2. -	20
l2. -ed	39
l2. -ly	-24
l2. -s	69
l2. /	46
l2. Name	-44
l2. letter	41
l2. n't	-64
l2. one	-42
l2. unit	18
l3 (	21
l3 ,	33
l3 /	20
l3 1.5	39
l3 10	-61
l3 12	28
l3 14	28
l3 16	-31
l3 2	23
l3 20	16
l3 24	19
l3 26	22
l3 450	-23
l3 5	-27
l3 6	17
l3 60	16
l3 7	-50
l3 8	19
l3 9	-40
l3 :	17
l3 ;	26
l3 a	32
l3 about	-30
l3 all	-46
l3 also	-19
l3 am	-32
l3 amp	19
l3 amps	49
l3 an	56
l3 apart	34
l3 apiece	32
l3 at	-79
l3 b	-27
l3 back	-19
l3 basement	-28
l3 bath	61
l3 bay	64
l3 be	-40
l3 better	22
l3 between	-54
l3 boards	25
l3 book	-33
l3 bottom	27
l3 bought	-17
l3 boxes	-35
l3 broke	16
l3 but	-34
l3 buy	-16
l3 by	34
l3 call	-37
l3 came	56
l3 can't	31
l3 capped	21
l3 change	51
l3 changed	32
l3 channel	-47
l3 circuit	36
l3 cleaned	44
l3 clear	39
l3 clips	28
l3 code	-38
l3 comes	-20
l3 crack	24
l3 crane's	-22
l3 cut	49
l3 doors	16
l3 double	16
l3 drop	20
l3 each	62
l3 eight	33
l3 eighty	-57
l3 ends	-17
l3 except	-17
l3 failed	-19
l3 fence	26
l3 flat	-24
l3 footers	24
l3 fourteen	19
l3 fridge	25
l3 ft	18
l3 gap	27
l3 get	-57
l3 gets	20
l3 go	21
l3 goal	-38
l3 goes	20
l3 going	-41
l3 gone	33
l3 good	-15
l3 grab	45
l3 guy	-25
l3 had	-22
l3 half	18
l3 hardware	-22
l3 have	-30
l3 he	-21
l3 he's	-18
l3 heads	42
l3 her	-28
l3 hes	-43
l3 him	-47
l3 hinge	22
l3 his	-25
l3 hit	-15
l3 hole	21
l3 hood	16
l3 hour	-24
l3 hours	-35
l3 hung	35
l3 i'd	44
l3 i'm	36
l3 i've	26
l3 if	67
l3 in	-36
l3 inch	36
l3 inches	-38
l3 inside	-15
l3 is	-42
l3 island	31
l3 its	-34
l3 jumper	-52
l3 keep	37
l3 key	-31
l3 knobs	18
l3 knock	-27
l3 last	-37
l3 left	-19
l3 leg	54
l3 line	-24
l3 meter	33
l3 mirror's	34
l3 mm	-21
l3 more	36
l3 morning	-17
l3 my	-67
l3 nailed	17
l3 need	-36
l3 needs	25
l3 new	25
l3 next	-33
l3 ninety	-30
l3 no	49
l3 nobody	-40
l3 nosing	-19
l3 nothing	31
l3 of	28
l3 off	-21
l3 oh	30
l3 ok	-31
l3 okay	-18
l3 old	53
l3 on	27
l3 one	-44
l3 ones	-18
l3 only	-37
l3 ordered	20
l3 other	-23
l3 ought	42
l3 out	-45
l3 over	22
l3 paper	-22
l3 pick	28
l3 piece	17
l3 pipe	-19
l3 psi	22
l3 put	-56
l3 r	24
l3 rack	-42
l3 range	-16
l3 rental	-34
l3 rh	16
l3 rip	38
l3 rock	23
l3 room	30
l3 row	-33
l3 run	26
l3 s	41
l3 screw	21
l3 second	53
l3 see	-35
l3 seven	-27
l3 seventy	34
l3 she	-25
l3 shelves	31
l3 side	39
l3 since	-57
l3 slab	23
l3 solid	16
l3 somebody	48
l3 spacing	29
l3 stairs	21
l3 start	-35
l3 steps	-17
l3 still	-21
l3 stuck	-16
l3 supply	15
l3 switch	-24
l3 tank's	-19
l3 tap	20
l3 tape	-26
l3 temp	32
l3 ten	-53
l3 th	-23
l3 that's	-20
l3 the	28
l3 them	24
l3 there	41
l3 they	-19
l3 they're	-28
l3 thinks	-42
l3 thirteen	57
l3 three	-23
l3 thurs	-19
l3 thursday	28
l3 tile	49
l3 times	-29
l3 tomorrow	44
l3 too	41
l3 torque	45
l3 truck	34
l3 twelve	33
l3 two	-21
l3 u	-41
l3 under	27
l3 unit	31
l3 up	-54
l3 upstairs	30
l3 used	21
l3 van	21
l3 water	-17
l3 we're	29
l3 well	35
l3 were	21
l3 white	65
l3 wide	28
l3 with	18
l3 won't	31
l3 wood	-33
l3 work	-18
l3 x	42
l3 yard	-41
l3 you	-57
l3. 's	-21
l3. (	21
l3. ,	33
l3. -ing	21
l3. :	17
l3. ;	26
l3. letter	29
l3. n't	54
l3. unit	20
letter head 0	-41
letter head none	-24
more figures 5	-37
more l. word	-48
more r 	-37
more r. #	-37
more words round	-24
of body	23
of cars	41
of food	-26
of kin	-61
of media	-75
of money	-60
of papers	-24
of past	-55
of phones	-50
of roads	-33
of school	-22
of services	24
of so many 0	44
of so many 1	-37
of so many 2	-22
of so many 3	-43
one head none	-117
r of body	-48
r of clock	-50
r of food	-64
r of kin	-124
r of money	-180
r of phones	-29
r of school	-24
r of services	73
r of sport	-54
r1 
	19
r1 )	-83
r1 ,	26
r1 -	-91
r1 .	15
r1 10	26
r1 12	44
r1 2	55
r1 2.4	17
r1 3	-30
r1 4	33
r1 5	21
r1 555	-33
r1 :	-135
r1 @	22
r1 a	-65
r1 aa	40
r1 about	-19
r1 above	27
r1 across	31
r1 adds	-52
r1 aff	21
r1 again	-43
r1 along	23
r1 already	-44
r1 amigos	-46
r1 an	-54
r1 anchors	40
r1 and	-17
r1 angry	-34
r1 apart	70
r1 are	23
r1 area	-32
r1 at	65
r1 b	-48
r1 back	60
r1 bad	32
r1 banksia	-26
r1 bath	33
r1 baths	33
r1 batts	-22
r1 bays	-22
r1 bedroom	-55
r1 behind	19
r1 below	23
r1 belt	-20
r1 blades	25
r1 blank	22
r1 blinds	22
r1 block	20
r1 blocks	40
r1 board	51
r1 boards	60
r1 bolts	23
r1 bracket	40
r1 brackets	49
r1 brass	49
r1 brick	31
r1 broken	53
r1 bucks	-136
r1 bulbs	26
r1 business	-44
r1 but	45
r1 by	61
r1 c	-35
r1 cabinet	34
r1 call	19
r1 came	17
r1 can	-33
r1 card	-16
r1 carriage	15
r1 centers	34
r1 centres	30
r1 cents	-51
r1 chance	-21
r1 chipped	26
r1 clamps	19
r1 clear	37
r1 clips	37
r1 closed	59
r1 closets	36
r1 code	-21
r1 come	-41
r1 coming	45
r1 corner	54
r1 couplings	23
r1 cracked	58
r1 crew	-26
r1 cut	21
r1 dash	-20
r1 dead	30
r1 deep	78
r1 digits	-33
r1 does	-18
r1 dollar	-60
r1 dollars	-68
r1 done	39
r1 doors	57
r1 double	36
r1 down	29
r1 downstairs	17
r1 drops	53
r1 eight	-26
r1 elbows	35
r1 euro	-96
r1 even	22
r1 extra	34
r1 fifty	-17
r1 fingers	-42
r1 five	-49
r1 flat	34
r1 floor	20
r1 footings	22
r1 forty	-22
r1 four	-54
r1 fourteen	-20
r1 gang	-78
r1 gasket	24
r1 get	-39
r1 gets	-61
r1 go	-70
r1 goes	-47
r1 going	-19
r1 good	28
r1 got	-26
r1 grille	-41
r1 guys	-88
r1 had	-25
r1 hall	60
r1 hand	-43
r1 handle	-75
r1 hangers	32
r1 has	-81
r1 have	44
r1 head	26
r1 heads	48
r1 heavy	24
r1 here	35
r1 high	68
r1 hinge	21
r1 hinges	65
r1 hole	-99
r1 homeruns	-21
r1 hooks	39
r1 hot	21
r1 hundreds	-36
r1 hung	22
r1 i	64
r1 i'll	27
r1 i'm	-16
r1 i've	-22
r1 if	-27
r1 in	27
r1 inch	17
r1 instead	44
r1 is	-124
r1 ish	-39
r1 it	-16
r1 it'll	-30
r1 joist	18
r1 just	58
r1 k	-77
r1 keys	-16
r1 kinds	-61
r1 knobs	26
r1 larch	-45
r1 last	-47
r1 layer	-82
r1 layers	40
r1 left	82
r1 leg	-18
r1 lights	40
r1 line	-15
r1 linear	46
r1 long	70
r1 loose	29
r1 man	-31
r1 maple	-27
r1 max	35
r1 miles	-47
r1 missing	29
r1 more	113
r1 moves	-17
r1 nail	34
r1 need	56
r1 needs	-66
r1 new	75
r1 next	-35
r1 nil	-32
r1 nine	21
r1 ninety	-32
r1 ninth	-21
r1 nos	35
r1 not	34
r1 nothing	-45
r1 o'clock	-94
r1 oc	57
r1 oclock	-20
r1 off	70
r1 old	26
r1 openings	21
r1 outlets	69
r1 panel	-114
r1 panels	24
r1 part	-56
r1 pavers	44
r1 per	70
r1 pickets	28
r1 piers	23
r1 pipe	19
r1 plate	19
r1 pm	-42
r1 pole	-68
r1 posts	21
r1 potato	-47
r1 pulls	52
r1 put	-23
r1 quarter	-33
r1 quid	-42
r1 reads	-34
r1 receps	25
r1 receptacles	39
r1 reducer	32
r1 right	18
r1 risers	23
r1 rod	-17
r1 rolled	-20
r1 roof	-18
r1 rubber	32
r1 running	34
r1 runs	49
r1 sash	-29
r1 says	-74
r1 sconces	29
r1 score	-28
r1 screens	53
r1 screw	18
r1 screws	62
r1 second	-69
r1 series	-26
r1 sharp	-51
r1 shelves	20
r1 shims	26
r1 short	48
r1 should	42
r1 shows	-28
r1 side	-21
r1 sides	-29
r1 smoke	44
r1 so	64
r1 south	24
r1 spaces	26
r1 spare	43
r1 star	-21
r1 stars	-60
r1 still	60
r1 stops	-50
r1 straps	38
r1 stripped	21
r1 stroke	-17
r1 studs	50
r1 supply	15
r1 switch	52
r1 switches	33
r1 tall	22
r1 tapcons	15
r1 ten	44
r1 that	-29
r1 the	-44
r1 then	-55
r1 there	-23
r1 thick	58
r1 thing	-24
r1 things	-76
r1 thirty	29
r1 this	-34
r1 tile	58
r1 tiles	32
r1 till	-28
r1 time	-22
r1 times	-150
r1 today	-23
r1 toilet	42
r1 toilets	42
r1 tomorrow	-71
r1 tonight	26
r1 top	26
r1 total	41
r1 towel	19
r1 treads	82
r1 trees	24
r1 trim	23
r1 tripped	-33
r1 turn	18
r1 two	-38
r1 u	-17
r1 under	23
r1 used	25
r1 vanities	16
r1 walls	38
r1 wants	-41
r1 was	-72
r1 washers	19
r1 wax	21
r1 way	-80
r1 ways	-61
r1 we	-19
r1 wednesday	36
r1 when	17
r1 which	18
r1 white	30
r1 wide	83
r1 window	-49
r1 windows	61
r1 won't	18
r1 wood	-19
r1 wrongs	-36
r1 x	49
r1. 's	49
r1. )	-83
r1. ,	26
r1. -	-91
r1. -ing	37
r1. -ly	16
r1. -s	26
r1. .	15
r1. /	17
r1. :	-135
r1. @	22
r1. Name	-43
r1. n't	-23
r1. one	-93
r1. word	26
r2 
	18
r2 "	42
r2 (	-33
r2 *	-27
r2 +	23
r2 ,	20
r2 -	27
r2 .	34
r2 /	-17
r2 00	-16
r2 0142	-31
r2 100	40
r2 12	86
r2 15	23
r2 16	24
r2 2	-40
r2 20	-16
r2 22	18
r2 28	31
r2 30	-25
r2 34	-24
r2 35	18
r2 36	22
r2 40	23
r2 5	-29
r2 7	-41
r2 8	47
r2 :	-74
r2 a	-42
r2 about	-44
r2 also	-47
r2 amp	15
r2 and	25
r2 are	70
r2 ask	49
r2 b	-19
r2 back	-38
r2 bags	16
r2 bath	-33
r2 be	81
r2 bedroom	-39
r2 before	-32
r2 behind	15
r2 bent	33
r2 blind	-19
r2 boards	18
r2 bolts	23
r2 bought	44
r2 box	-61
r2 boxes	42
r2 brackets	-18
r2 but	15
r2 buy	20
r2 by	-31
r2 c	-20
r2 can't	-23
r2 cap	41
r2 caulk	32
r2 ceiling	-19
r2 center	67
r2 change	-31
r2 changed	17
r2 client	-41
r2 clips	25
r2 code	67
r2 concrete	-21
r2 covers	-21
r2 crack	-27
r2 cracked	85
r2 crown	-17
r2 cut	19
r2 days	-44
r2 do	64
r2 done	-35
r2 doors	-23
r2 down	-111
r2 each	52
r2 eighteen	-24
r2 eighty	-38
r2 elbow	-21
r2 em	87
r2 end	23
r2 epoxy	-20
r2 every	37
r2 extra	-21
r2 fan	-20
r2 far	42
r2 fifty	-32
r2 filter	20
r2 filters	30
r2 fine	52
r2 five	-59
r2 foot	16
r2 footers	37
r2 for	49
r2 forty	19
r2 four	-32
r2 fourteen	44
r2 fridays	-34
r2 front	52
r2 furnace	-49
r2 gal	17
r2 gallon	-19
r2 gang	-26
r2 glue	-31
r2 go	70
r2 going	-16
r2 good	16
r2 got	46
r2 grade	35
r2 half	36
r2 hang	55
r2 hangers	21
r2 he	-49
r2 he'll	17
r2 he's	-32
r2 heads	25
r2 hinges	-42
r2 hole	-22
r2 hour	-54
r2 house	24
r2 hung	40
r2 i	22
r2 if	-25
r2 inch	49
r2 inside	30
r2 it	15
r2 it's	26
r2 laundry	-39
r2 leaking	20
r2 lift	-21
r2 lime	22
r2 lines	16
r2 ln	-21
r2 master	15
r2 mate	-37
r2 me	-25
r2 mirror	-22
r2 missing	43
r2 monday	-26
r2 morning	-18
r2 must	-18
r2 night	-62
r2 nine	-43
r2 nineteen	-28
r2 ninety	28
r2 noon	-44
r2 not	22
r2 nothing	-25
r2 nuts	37
r2 of	-17
r2 off	-19
r2 oh	-25
r2 ok	26
r2 old	17
r2 one	-62
r2 ones	30
r2 open	33
r2 or	21
r2 order	-26
r2 outlets	29
r2 over	-24
r2 panel	26
r2 pick	-15
r2 plaster	41
r2 plates	16
r2 play	-47
r2 plus	25
r2 pop	-26
r2 pound	23
r2 primer	60
r2 put	17
r2 quarter	19
r2 r	20
r2 range	-40
r2 return	18
r2 right	-22
r2 ring	56
r2 s	-26
r2 same	22
r2 sand	18
r2 saturday	-37
r2 sent	16
r2 set	-20
r2 she's	38
r2 shelf	29
r2 short	38
r2 showed	-38
r2 shower	-42
r2 shut	-17
r2 side	42
r2 single	46
r2 site	60
r2 six	-30
r2 sixteen	31
r2 skip	-17
r2 so	-18
r2 sold	-17
r2 somewhere	-19
r2 spring	-22
r2 st	-29
r2 station	19
r2 still	-61
r2 stop	23
r2 street	-15
r2 sunday	-48
r2 take	-25
r2 ten	49
r2 tens	26
r2 that	-37
r2 the	46
r2 then	30
r2 there's	-41
r2 they	-31
r2 they're	47
r2 thing	-50
r2 this	37
r2 those	-34
r2 three	-48
r2 thursday	-32
r2 tiles	15
r2 today	31
r2 told	17
r2 top	-41
r2 trips	-28
r2 truck	22
r2 twelve	30
r2 twenty	31
r2 upstairs	-30
r2 us	-79
r2 used	28
r2 want	22
r2 wants	-34
r2 was	38
r2 washer	21
r2 way	-32
r2 we're	-25
r2 week	-16
r2 will	20
r2 window	-16
r2 windows	-28
r2 worth	17
r2 wrong	21
r2 x	47
r2 you're	57
r2 zero	-17
r2. "	42
r2. 's	-16
r2. (	-33
r2. *	-27
r2. +	23
r2. ,	20
r2. -	27
r2. -ing	32
r2. .	34
r2. :	-74
r2. Name	-76
r2. letter	24
r2. one	-55
r2. unit	58
r3 '	-44
r3 -	-15
r3 10	-22
r3 12	24
r3 14	-38
r3 24	21
r3 28	-44
r3 3	33
r3 5	61
r3 8	32
r3 :	-60
r3 ;	-38
r3 a	-41
r3 again	15
r3 air	39
r3 and	40
r3 another	17
r3 app	-28
r3 are	16
r3 bar	27
r3 base	-23
r3 bath	27
r3 before	-31
r3 behind	52
r3 bit	17
r3 black	67
r3 blinds	-17
r3 blue	-27
r3 board	-46
r3 boards	16
r3 bottom	64
r3 box	47
r3 bracket	34
r3 brackets	-18
r3 broken	27
r3 bulbs	19
r3 can	32
r3 caps	27
r3 case	28
r3 chipped	49
r3 clean	26
r3 close	-41
r3 closet	57
r3 color	-49
r3 corner	41
r3 cover	36
r3 cracked	-51
r3 crew	-34
r3 dead	35
r3 done	-28
r3 door	50
r3 door's	31
r3 down	22
r3 drain	29
r3 drawer	-30
r3 dryer	40
r3 dumpster	-23
r3 each	-27
r3 edge	28
r3 eight	-41
r3 either	-31
r3 eleven	-22
r3 every	-17
r3 falls	-27
r3 fault	-20
r3 feet	27
r3 fifteen	21
r3 filler	-16
r3 find	-31
r3 fine	18
r3 fixed	-23
r3 flapper	-32
r3 flat	21
r3 foot	21
r3 for	-40
r3 forty	19
r3 from	-36
r3 front	19
r3 gang	44
r3 gap	28
r3 gauge	22
r3 get	-28
r3 gets	24
r3 glass	32
r3 go	27
r3 goes	17
r3 good	-32
r3 got	56
r3 gotta	18
r3 grab	-20
r3 grille	-38
r3 guy	-26
r3 hall	16
r3 hangers	41
r3 have	33
r3 he	-33
r3 he's	-56
r3 head	-15
r3 heads	-34
r3 her	28
r3 hinges	-25
r3 how	-57
r3 hung	20
r3 i	-16
r3 i'll	-30
r3 if	-31
r3 in	-33
r3 is	-36
r3 island	-23
r3 it	23
r3 it's	28
r3 kit	16
r3 kitchen	51
r3 last	-23
r3 lazy	-32
r3 leave	24
r3 leaves	18
r3 left	-18
r3 leg	61
r3 legs	15
r3 length	24
r3 lid	21
r3 lift	-55
r3 like	-37
r3 line	20
r3 long	20
r3 lot	-40
r3 m	-19
r3 manual	-30
r3 meter	18
r3 middle	61
r3 min	-27
r3 missing	-42
r3 monday	-22
r3 more	-15
r3 morning	-47
r3 move	15
r3 must	-16
r3 nail	-37
r3 need	28
r3 neutral	41
r3 never	-23
r3 new	-41
r3 no	-32
r3 nose	37
r3 now	-22
r3 number	21
r3 off	-26
r3 old	-34
r3 on	-17
r3 opened	16
r3 order	39
r3 ought	37
r3 out	94
r3 outlets	-17
r3 over	-26
r3 paint	26
r3 panel	33
r3 panels	35
r3 point	18
r3 porch	49
r3 punch	-17
r3 quarter	25
r3 radio	-39
r3 ran	48
r3 range	-28
r3 required	-16
r3 reset	-36
r3 return	-21
r3 right	-33
r3 ring	17
r3 room	-34
r3 run	45
r3 runs	-18
r3 s	22
r3 safe	53
r3 says	32
r3 screens	-34
r3 screw	-18
r3 second	-40
r3 seventh	-36
r3 seventy	45
r3 shelf	19
r3 short	43
r3 side	-15
r3 sill	39
r3 sister	35
r3 sixteen	39
r3 sixty	26
r3 slope	34
r3 so	-24
r3 socket	16
r3 some	36
r3 stairs	20
r3 steps	25
r3 sticks	-17
r3 still	-24
r3 stone	-27
r3 straps	-23
r3 stripped	19
r3 stud	28
r3 studs	28
r3 switch	18
r3 tag	-17
r3 take	42
r3 tap	18
r3 tape	51
r3 ten	-59
r3 tens	26
r3 thank	-31
r3 then	24
r3 there	-30
r3 thermostat	-37
r3 those	22
r3 through	-53
r3 tile	-19
r3 time	50
r3 today	-60
r3 together	-26
r3 towel	17
r3 tread	-51
r3 trim	-20
r3 truck	-23
r3 tub	41
r3 tubes	22
r3 twelve	-42
r3 twenty	59
r3 two	-19
r3 under	-20
r3 up	-22
r3 use	45
r3 used	-28
r3 van	27
r3 vent	-23
r3 wall	-15
r3 was	-24
r3 waste	36
r3 water	-16
r3 way	57
r3 we	55
r3 we're	17
r3 week	-18
r3 where	31
r3 white	-25
r3 wire's	42
r3 with	-15
r3 x	28
r3 yesterday	18
r3. '	-44
r3. -	-15
r3. -ed	56
r3. -ing	-54
r3. -ly	-17
r3. 1	25
r3. :	-60
r3. ;	-38
r3. Name	-16
r3. n't	-17
r3. unit	23
rule 	-50
rule eachOf	81
rule pair	164
rule quantity/decimal	50
rule quantity/whole+taken-back	39
rule range	28
size 0	-18
size 1	-21
size 20	19
size 60	31
size 9999	-41
size more	-59
unit head 0	-45
unit head 1	-36
unit head none	-26
units 0	-59
units 1	62
units 2	26
word head 2	18
word head 3	53
word head none	-15
£ head none	-52
`;
