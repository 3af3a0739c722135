/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `

 - _	64

 _. )	-16

 _. -	-21

 _. .	-108
  _	24
 _. -	21
 _. -ed	42
 _. .	-119
 _. 1	38
 _. letter	19
 _. unit	-22
 _. word	14
 a _	-14
 bath _	-33
 bedroom _	-14
 bring _	68
 catch _	-32
 circuit _	-40
 cut _	52
 day _	-14
 detail _	-16
 flat _	-54
 got _	68
 grade _	-23
 he's _	-81
 house _	-33
 hung _	70
 it's _	-13
 lot _	-41
 need _	103
 on _	-29
 phase _	-19
 put _	48
 r _	-49
 replaced _	25
 rm _	-31
 room _	-24
 route _	-14
 sheet _	-57
 static's _	34
 step _	-24
 suite _	-40
 take _	35
 that's _	-32
 the _	-53
 there's _	-32
 truck _	-39
 unit _	-52
 zone _	-14
" 
 _	-18
" , _	13
" . _	-15
" / _	-18
# # _	24
# -ed _	109
# -ing _	-20
# ._ -	20
# ._ .	-119
# ._ a	-39
# ._ dollars	-42
# ._ doors	59
# ._ fifty	36
# ._ four	-14
# ._ kinds	-67
# ._ left	69
# ._ more	-60
# ._ o'clock	-52
# ._ of	111
# ._ on	33
# ._ outlets	51
# ._ per	66
# ._ screws	81
# ._ seven	-31
# ._ tile	60
# ._ to	-61
# ._ treads	58
# ._ way	-54
# ._ wrongs	-39
# ._ x	16
# _ -	20
# _ -ed	42
# _ .	-119
# _ 1	38
# _ letter	19
# _ unit	-22
# letter _	-49
# unit _	-86
# word _	-61
$ ._ 	-22
$ ._ ,	-41
$ ._ .	-46
$ _ #	-22
$ _ ,	-41
$ _ .	-46
$ _ word	-52
$ _. #	-22
$ _. ,	-41
$ _. .	-46
$ _. word	-52
's -ing _	86
's ._ 	54
's ._ ,	21
's ._ across	40
's ._ and	47
's ._ at	90
's ._ by	38
's ._ five	-15
's ._ in	26
's ._ left	45
's ._ long	53
's ._ of	-75
's ._ off	33
's ._ so	25
's ._ to	-27
's _ #	54
's _ ,	21
's _ -ing	59
's _ 1	-14
's _ one	-36
's _ word	54
's one _	-18
's unit _	-77
's word _	14
( _ word	50
( _. word	50
( word _	51
) , _	60
+ _ -s	27
+ _ word	49
+ _. -s	27
+ _. word	49
, $ _	-54
, 's _	41
, -ed _	15
, -ing _	25
, ._ 	42
, ._ -	-28
, ._ and	20
, ._ at	-30
, ._ deep	23
, ._ left	25
, ._ of	117
, ._ out	-37
, ._ short	16
, ._ wide	25
, _ #	42
, _ -	-28
, _ -ed	37
, _ -s	28
, _ 1	22
, _ letter	14
, _ unit	15
, _. #	42
, _. -	-28
, _. -ed	37
, _. -s	28
, _. 1	22
, _. letter	14
, _. unit	15
, and _	44
, bring _	26
, buy _	27
, day _	-47
, get _	37
, have _	35
, need _	65
, needs _	22
, now _	20
, order _	111
, section _	-33
, so _	25
, spec _	34
, that's _	14
, the _	18
, unit _	-46
, used _	17
, word _	32
- ._ 	-49
- ._ -	-23
- _ #	-49
- _ -	-23
- _ 1	21
- _ word	-22
- _. #	-49
- _. -	-23
- _. 1	21
- _. word	-22
-ed , _	82
-ed ._ 	-30
-ed ._ .	62
-ed ._ and	-14
-ed ._ of	12
-ed ._ times	-70
-ed / _	-13
-ed _ #	-30
-ed _ .	62
-ed one _	-30
-ed word _	20
-ing , _	16
-ing ._ 	63
-ing ._ and	23
-ing ._ more	-43
-ing ._ not	36
-ing _ #	63
-ing _ -ing	-18
-ing _ -s	33
-ing _ word	35
-ing word _	32
-ly _ word	43
-ly word _	-68
-s 's _	19
-s , _	20
-s . _	51
-s ._ 	31
-s ._ ,	61
-s ._ .	64
-s ._ and	-29
-s ._ more	25
-s ._ of	-66
-s ._ so	49
-s ._ the	-46
-s ._ to	15
-s : _	40
-s _ #	31
-s _ ,	61
-s _ -ing	-16
-s _ -s	24
-s _ .	64
-s _ one	-43
-s _ unit	23
-s _ word	37
-s one _	-30
-s unit _	-59
-s word _	31
. 
 _	-18
. $ _	-55
. -ed _	57
. ._ )	-55
. ._ :	-14
. ._ of	-49
. / _	-18
. _ )	-55
. _ -s	44
. _ :	-14
. _ word	23
. _. )	-55
. _. -s	44
. _. :	-14
. _. word	23
. bath _	-56
. bring _	34
. buy _	42
. get _	62
. have _	59
. need _	46
. order _	128
. short _	20
. used _	44
. word _	-16
/ - _	64
/ ._ )	-16
/ ._ -	-21
/ ._ .	-76
/ _ )	-16
/ _ -	-21
/ _ .	-76
0 l. word	35
0figures 4 l. -	-39
0figures 4 l. 1	-21
0figures 4 r. #	-18
0figures 4 r. .	-16
0figures 4 r. word	-24
1 , _	-48
1 - _	-53
1 -s _	17
1 . _	26
1 ._ 	-15
1 / _	17
1 1 _	-64
1 : _	20
1 _ #	-15
1 _ 1	-83
1 _ word	39
1 figures 1	106
1 l 	16
1 l 
	-40
1 l +	13
1 l ,	48
1 l -	14
1 l .	35
1 l and	68
1 l another	-125
1 l at	91
1 l back	-28
1 l bath	-55
1 l be	31
1 l bottom	-42
1 l bring	79
1 l but	-57
1 l buy	77
1 l every	-110
1 l from	24
1 l get	126
1 l good	-41
1 l got	70
1 l grab	69
1 l in	67
1 l inch	52
1 l it	36
1 l it's	-21
1 l last	-137
1 l left	-33
1 l long	-39
1 l longer	-30
1 l me	65
1 l need	48
1 l needs	16
1 l new	-91
1 l no	-40
1 l of	31
1 l old	-86
1 l only	-41
1 l order	36
1 l other	-123
1 l put	50
1 l right	-59
1 l second	-48
1 l short	69
1 l so	22
1 l square	-62
1 l that	-131
1 l that's	-32
1 l the	-209
1 l there's	72
1 l third	-22
1 l this	-59
1 l type	-42
1 l used	14
1 l want	58
1 l which	-14
1 l with	-21
1 l. #	16
1 l. +	13
1 l. ,	48
1 l. -	14
1 l. -ing	-90
1 l. -s	-17
1 l. .	35
1 l. /	-40
1 l. 1	17
1 l. unit	15
1 l. word	-66
1 letter _	51
1 parts	115
1 r 	-13
1 r 
	28
1 r -	-45
1 r 1	20
1 r 3	22
1 r and	-18
1 r b	15
1 r before	-30
1 r behind	-35
1 r bracket	44
1 r by	-57
1 r can	22
1 r door	28
1 r down	-43
1 r eight	34
1 r five	-35
1 r from	-36
1 r go	-30
1 r goes	-28
1 r hand	-71
1 r has	-49
1 r he	-23
1 r here	27
1 r i	-25
1 r is	-124
1 r it's	-16
1 r left	-17
1 r leg	-41
1 r new	57
1 r nine	36
1 r of	-243
1 r off	29
1 r old	21
1 r on	-59
1 r out	-23
1 r panel	-88
1 r reads	-20
1 r reducer	31
1 r shelf	-71
1 r so	-55
1 r spare	25
1 r they	-29
1 r thing	-27
1 r thursday	-27
1 r tile	-21
1 r to	-52
1 r tomorrow	25
1 r two	-26
1 r up	12
1 r was	-21
1 r wax	16
1 r way	-19
1 r with	-57
1 r. #	-13
1 r. 's	-27
1 r. -	-45
1 r. -ing	56
1 r. -s	-109
1 r. /	28
1 r. 1	56
1 r. one	22
1 r. unit	21
1 r. word	-31
1 unit _	33
1 word _	60
1 words	-81
12 - _	-85
12 figures 1	-17
12 l 	15
12 l 
	-30
12 l ,	-17
12 l -	13
12 l .	-23
12 l :	56
12 l a	95
12 l after	-41
12 l all	107
12 l and	45
12 l are	14
12 l at	-112
12 l bay	-25
12 l before	-86
12 l between	-50
12 l breaker	-22
12 l chapter	-31
12 l circuit	-78
12 l cloud	-16
12 l counted	59
12 l detail	-43
12 l door	-65
12 l exit	-54
12 l flat	-52
12 l floor	-41
12 l four	-26
12 l from	13
12 l got	79
12 l had	63
12 l half	-29
12 l have	18
12 l house	-59
12 l hung	77
12 l in	-62
12 l it	70
12 l it's	-51
12 l leaves	63
12 l lot	-22
12 l me	16
12 l need	83
12 l needs	18
12 l nine	-16
12 l no	-22
12 l number	-103
12 l of	14
12 l on	-38
12 l one	-17
12 l or	-17
12 l order	34
12 l past	-62
12 l port	-16
12 l pulled	19
12 l room	-43
12 l route	-39
12 l saves	-44
12 l set	22
12 l sheet	-36
12 l six	29
12 l so	32
12 l step	-24
12 l the	58
12 l there's	16
12 l til	-43
12 l to	19
12 l tomorrow	28
12 l unit	-70
12 l up	43
12 l us	84
12 l used	67
12 l want	28
12 l wants	16
12 l was	-52
12 l with	38
12 l x	40
12 l. #	15
12 l. 's	41
12 l. ,	-17
12 l. -	13
12 l. -ed	35
12 l. -ing	14
12 l. -s	29
12 l. .	-23
12 l. /	-30
12 l. :	56
12 l. Name	-67
12 l. letter	16
12 l. one	-22
12 parts	39
12 r )	-17
12 r :	-42
12 r a	27
12 r boards	26
12 r bottom	16
12 r bucks	-53
12 r by	113
12 r cans	31
12 r deep	20
12 r door	-51
12 r doors	44
12 r drops	51
12 r fifty	-45
12 r five	22
12 r for	49
12 r four	-18
12 r got	-51
12 r hangers	30
12 r hole	-74
12 r i	37
12 r in	-35
12 r is	-15
12 r it	-27
12 r left	65
12 r loose	26
12 r more	18
12 r needs	-60
12 r o'clock	-42
12 r of	122
12 r outlets	24
12 r over	28
12 r screws	-24
12 r seven	-21
12 r sharp	-72
12 r so	20
12 r studs	39
12 r the	21
12 r then	17
12 r they	-30
12 r this	-38
12 r times	-38
12 r to	20
12 r tomorrow	-39
12 r two	-13
12 r was	-54
12 r we	-21
12 r with	63
12 r x	18
12 r. 's	35
12 r. )	-17
12 r. -s	87
12 r. 1	30
12 r. :	-42
12 r. letter	29
12 r. one	-53
12 r. unit	34
12 r. word	-22
12 words	35
12 words round	-60
16 x _	23
2 figures 1	-25
2 l 	19
2 l 
	-22
2 l (	36
2 l +	20
2 l -	-33
2 l :	13
2 l a	-24
2 l about	17
2 l another	58
2 l at	-95
2 l back	62
2 l bath	-62
2 l bay	-73
2 l be	20
2 l bed	-35
2 l bedroom	-85
2 l bring	67
2 l buy	67
2 l by	15
2 l cut	22
2 l day	-41
2 l drawer	-38
2 l get	61
2 l got	-43
2 l grade	-23
2 l have	51
2 l header's	52
2 l in	-17
2 l it	-36
2 l missing	18
2 l need	80
2 l number	-47
2 l of	-37
2 l on	37
2 l one	-20
2 l order	-29
2 l phase	-19
2 l put	23
2 l six	-22
2 l so	58
2 l takes	-69
2 l the	95
2 l there's	-40
2 l up	45
2 l used	32
2 l want	17
2 l wants	19
2 l with	35
2 l zone	-35
2 l. #	19
2 l. 's	13
2 l. (	36
2 l. +	20
2 l. -	-33
2 l. -ed	33
2 l. -s	27
2 l. /	-22
2 l. :	13
2 l. letter	-20
2 l. one	-53
2 l. unit	-32
2 l. word	17
2 parts	19
2 r 	-30
2 r )	13
2 r ,	-20
2 r -	-20
2 r .	-17
2 r 20	19
2 r :	-38
2 r a	-17
2 r and	-12
2 r bolts	22
2 r brackets	17
2 r by	72
2 r can	-58
2 r cents	-60
2 r clamps	23
2 r doors	78
2 r elbows	20
2 r four	12
2 r half	50
2 r hinges	23
2 r i	27
2 r left	54
2 r more	68
2 r new	14
2 r no	47
2 r of	150
2 r on	-38
2 r one	-42
2 r part	-64
2 r screws	63
2 r sides	-28
2 r so	-18
2 r spare	24
2 r starts	-19
2 r ten	24
2 r the	-68
2 r twenty	55
2 r two	56
2 r we	-13
2 r wrongs	-39
2 r x	-18
2 r. #	-30
2 r. )	13
2 r. ,	-20
2 r. -	-20
2 r. -ed	-16
2 r. .	-17
2 r. 1	33
2 r. :	-38
2 r. one	77
2 r. unit	-53
2 x _	19
20 figures 2	37
20 l 	13
20 l ,	62
20 l .	-27
20 l @	42
20 l a	18
20 l and	26
20 l at	-50
20 l be	22
20 l by	46
20 l got	17
20 l of	19
20 l out	47
20 l r	-41
20 l reads	-37
20 l says	23
20 l set	33
20 l side	63
20 l so	45
20 l that's	-30
20 l the	-32
20 l to	37
20 l under	50
20 l unit	-21
20 l uppers	30
20 l used	23
20 l. #	13
20 l. ,	62
20 l. -ed	28
20 l. -ing	57
20 l. .	-27
20 l. @	42
20 l. letter	-37
20 parts	20
20 r -	-35
20 r .	66
20 r and	27
20 r bucks	-48
20 r by	51
20 r centers	39
20 r clips	27
20 r eighth	-17
20 r even	32
20 r hung	28
20 r i	50
20 r in	-13
20 r is	52
20 r joist	29
20 r ninety	-40
20 r ninth	-36
20 r oc	47
20 r on	28
20 r second	-44
20 r studs	13
20 r the	-18
20 r to	107
20 r treads	23
20 r twenty	-33
20 r two	-64
20 r wide	18
20 r. -	-35
20 r. -s	55
20 r. .	66
20 r. Name	-13
20 r. one	-139
20 r. word	52
20 words round	-46
4 x _	16
5 figures 1	-26
5 l 	31
5 l 
	-33
5 l ,	82
5 l -	17
5 l .	40
5 l :	17
5 l after	-56
5 l all	-14
5 l and	66
5 l another	72
5 l at	-134
5 l be	50
5 l bring	25
5 l by	-29
5 l channel	-26
5 l code	-40
5 l cut	18
5 l day	-55
5 l dock	-57
5 l door	-29
5 l five	-22
5 l flat	-67
5 l for	23
5 l get	54
5 l got	48
5 l has	28
5 l have	71
5 l in	-17
5 l it	-30
5 l it's	-14
5 l left	57
5 l level	-59
5 l loop	-42
5 l me	54
5 l needs	25
5 l no	-14
5 l note	-43
5 l number	-67
5 l of	-14
5 l on	15
5 l only	80
5 l put	67
5 l r	-38
5 l replaced	25
5 l room	-56
5 l shelf	-49
5 l short	85
5 l so	27
5 l ten	-26
5 l that's	13
5 l there's	-13
5 l till	-45
5 l two	-41
5 l unit	-53
5 l up	43
5 l us	16
5 l used	36
5 l wall	43
5 l with	38
5 l x	22
5 l zone	-42
5 l. 's	-39
5 l. ,	82
5 l. -	17
5 l. -ed	37
5 l. -ing	38
5 l. -s	69
5 l. .	40
5 l. /	-33
5 l. 1	24
5 l. :	17
5 l. Name	-37
5 l. letter	-23
5 l. one	-31
5 l. unit	-39
5 r 
	-14
5 r )	-36
5 r -	-51
5 r 2	40
5 r :	-12
5 r a	-13
5 r and	53
5 r at	-48
5 r baths	24
5 r batts	-28
5 r brackets	23
5 r business	-51
5 r by	27
5 r came	-31
5 r eight	30
5 r elbows	17
5 r five	-28
5 r four	-14
5 r good	-20
5 r has	-36
5 r he's	-20
5 r hinges	25
5 r in	47
5 r is	-60
5 r layers	59
5 r left	74
5 r long	45
5 r more	85
5 r new	23
5 r o'clock	-64
5 r of	164
5 r on	44
5 r one	-16
5 r outlets	54
5 r per	63
5 r screens	64
5 r shelves	26
5 r so	24
5 r the	-89
5 r they	47
5 r things	-63
5 r three	21
5 r times	-94
5 r to	-85
5 r today	-54
5 r tomorrow	-49
5 r two	21
5 r wall	20
5 r way	-74
5 r went	53
5 r windows	43
5 r x	39
5 r. 's	-35
5 r. )	-36
5 r. -	-51
5 r. -ed	32
5 r. -s	72
5 r. /	-14
5 r. :	-12
5 r. one	-18
5 r. unit	31
5 words	31
555 - _	-35
555 _. word	-14
6 x _	12
60 figures 2	13
60 l 	24
60 l $	-48
60 l ,	-14
60 l -	-54
60 l .	41
60 l :	16
60 l a	32
60 l about	28
60 l all	25
60 l and	24
60 l at	130
60 l be	-28
60 l by	53
60 l catch	-32
60 l cut	26
60 l eleven	-37
60 l for	40
60 l from	91
60 l have	13
60 l he's	-57
60 l in	-65
60 l is	56
60 l it	-21
60 l it's	-39
60 l lot	-21
60 l need	32
60 l needs	13
60 l nineteen	-21
60 l not	31
60 l number	-87
60 l on	-33
60 l ordered	18
60 l point	21
60 l says	35
60 l so	36
60 l supply	21
60 l the	14
60 l twelve	-45
60 l wall	30
60 l wants	56
60 l x	51
60 l. #	24
60 l. $	-48
60 l. 's	30
60 l. ,	-14
60 l. -	-54
60 l. -ed	33
60 l. -ing	47
60 l. -ly	44
60 l. -s	-12
60 l. .	41
60 l. :	16
60 l. letter	24
60 l. one	-79
60 l. unit	30
60 l. word	64
60 parts	-20
60 r 	48
60 r ,	-25
60 r -	29
60 r .	15
60 r :	-16
60 r across	40
60 r aff	28
60 r and	12
60 r at	24
60 r balusters	17
60 r blocks	25
60 r boards	19
60 r brick	28
60 r bucks	-60
60 r by	-48
60 r dollars	-85
60 r down	112
60 r even	15
60 r fifty	-49
60 r flat	26
60 r in	-23
60 r is	21
60 r not	22
60 r of	-35
60 r off	65
60 r on	-112
60 r pulls	23
60 r seven	-31
60 r so	60
60 r that	-61
60 r they	29
60 r thick	46
60 r to	24
60 r wide	44
60 r x	24
60 r. #	48
60 r. 's	37
60 r. ,	-25
60 r. -	29
60 r. -s	-25
60 r. .	15
60 r. :	-16
60 r. letter	57
60 r. one	-54
60 r. unit	-19
60 r. word	35
60 words	27
60 words round	12
60 x _	19
9 _. 1	-42
99 l 	-39
99 l $	-41
99 l about	30
99 l an	-72
99 l at	15
99 l be	29
99 l is	49
99 l it's	52
99 l of	-93
99 l over	-49
99 l return	29
99 l to	68
99 l was	73
99 l. #	-39
99 l. $	-41
99 l. 's	64
99 l. -s	13
99 l. one	-76
99 l. word	48
99 parts	25
99 r ,	44
99 r -	34
99 r .	-14
99 r and	19
99 r at	16
99 r bucks	-62
99 r by	13
99 r in	67
99 r is	-59
99 r on	98
99 r out	40
99 r so	42
99 r to	-31
99 r. 's	20
99 r. ,	44
99 r. -	34
99 r. -ed	20
99 r. -s	-39
99 r. .	-14
99 r. one	-17
99 r. unit	31
99 r. word	28
99 words	54
99 words round	-12
999 0figures 4	-70
999 l $	-50
999 l ,	-33
999 l -	-22
999 l .	43
999 l 555	-21
999 l a	-104
999 l about	75
999 l and	36
999 l are	13
999 l at	57
999 l extension	-47
999 l going	65
999 l got	51
999 l is	85
999 l it	39
999 l need	19
999 l no	50
999 l not	26
999 l one	-28
999 l out	85
999 l reads	56
999 l rise	61
999 l rm	-60
999 l room	-20
999 l section	-53
999 l suite	-33
999 l that's	62
999 l the	-98
999 l to	34
999 l two	75
999 l wants	20
999 l was	-46
999 l x	-46
999 l. $	-50
999 l. 's	37
999 l. ,	-33
999 l. -	-22
999 l. -ed	14
999 l. -ing	48
999 l. -s	47
999 l. .	43
999 l. 1	-53
999 l. letter	-22
999 l. one	30
999 l. unit	-71
999 oh	-84
999 parts	-37
999 r 	15
999 r 
	-16
999 r ,	30
999 r -	-71
999 r .	14
999 r 555	-31
999 r :	-20
999 r a	-32
999 r across	25
999 r and	-51
999 r at	44
999 r block	-17
999 r bucks	-89
999 r by	-24
999 r centres	19
999 r deep	43
999 r dollars	-46
999 r five	21
999 r for	-76
999 r four	-14
999 r going	48
999 r high	73
999 r if	-13
999 r k	-36
999 r leg	34
999 r not	36
999 r of	81
999 r off	46
999 r on	24
999 r over	-62
999 r pickets	25
999 r screws	51
999 r so	25
999 r the	32
999 r to	-33
999 r wide	28
999 r wire	26
999 r with	25
999 r x	46
999 r. #	15
999 r. 's	40
999 r. ,	30
999 r. -	-71
999 r. -s	-23
999 r. .	14
999 r. /	-16
999 r. 1	-62
999 r. :	-20
999 r. letter	-32
999 r. one	65
999 r. unit	-42
999 r. word	17
999 swallowed	16
999 swallowed round	-34
999 words	111
999 words round	88
9999 figures 4	-47
9999 figures 5	-43
9999 l 	-29
9999 l $	-22
9999 l ,	13
9999 l -	-24
9999 l at	138
9999 l code	-20
9999 l from	-64
9999 l in	-26
9999 l switch	-45
9999 l. #	-29
9999 l. $	-22
9999 l. 's	34
9999 l. ,	13
9999 l. -	-24
9999 l. unit	-65
9999 l. word	-14
9999 r ,	17
9999 r and	-43
9999 r in	-20
9999 r long	51
9999 r to	76
9999 r x	-36
9999 r. ,	17
9999 r. -s	-22
9999 r. letter	-36
9999 r. unit	-20
9999 r. word	29
9999 swallowed round	38
9999 words	-41
9999 words round	50
: 
 _	-19
: ._ of	12
: / _	-19
: _ -ed	28
: _ -s	45
: _ letter	31
: _ word	51
: _. -ed	28
: _. -s	45
: _. letter	31
: _. word	51
: unit _	-16
: word _	-19
Name . _	-14
Name ._ .	-27
Name _ .	-27
Name _ word	-62
Name word _	-32
_ 's one	53
_ 's word	-18
_ ) .	36
_ ) word	-114
_ , 's	44
_ , -s	-31
_ , 1	-33
_ , one	33
_ , word	20
_ - 1	-18
_ - word	-50
_ -ed ,	18
_ -ed -s	58
_ -ed .	38
_ -ed unit	39
_ -ed word	-16
_ -ing #	-14
_ -ing -s	36
_ -ing unit	22
_ -s #	116
_ -s 's	-54
_ -s +	15
_ -s ,	15
_ -s -ed	66
_ -s -ing	50
_ -s .	-12
_ -s 1	-65
_ -s letter	37
_ -s unit	-42
_ -s word	23
_ . #	-52
_ . 's	44
_ . -ed	49
_ . -ing	-14
_ . -s	16
_ . 1	35
_ . letter	43
_ . one	-39
_ / 1	72
_ 1 "	37
_ 1 #	-40
_ 1 -	78
_ 1 1	-58
_ 1 letter	53
_ 1 unit	50
_ 1 word	27
_ : 1	-66
_ : word	-16
_ @ 1	42
_ Name Name	-22
_ letter #	-54
_ letter -s	-25
_ letter 1	73
_ n't word	-71
_ one #	-129
_ one one	-77
_ one unit	92
_ unit #	34
_ unit ,	45
_ unit -s	23
_ unit 1	-28
_ unit unit	-44
_ word #	61
_ word 's	-19
_ word (	-23
_ word ,	-24
_ word -	-28
_ word -ed	-46
_ word -ing	12
_ word -s	48
_ word .	20
_ word 1	93
_ word :	-72
_ word Name	-64
_ word unit	14
_. 
 1	72
_. ) .	36
_. ) word	-114
_. , 's	44
_. , -s	-31
_. , 1	-33
_. , one	33
_. , word	20
_. - 1	-18
_. - word	-50
_. . #	-52
_. . 's	44
_. . -ed	49
_. . -ing	-14
_. . -s	16
_. . 1	35
_. . letter	43
_. . one	-39
_. 2 -	36
_. 2 letter	21
_. 20 unit	19
_. 4 letter	36
_. 4 unit	-28
_. 5 unit	14
_. 555 1	-31
_. : 1	-66
_. : word	-16
_. @ 1	42
_. a -s	13
_. a .	-23
_. a unit	-13
_. a word	-44
_. across word	44
_. alder Name	-15
_. along word	19
_. an unit	-80
_. and 's	13
_. and -ed	13
_. and 1	-24
_. and Name	32
_. and one	-16
_. and unit	31
_. are word	32
_. at one	54
_. at unit	-43
_. baths #	24
_. before word	14
_. behind word	17
_. below word	19
_. blank -s	34
_. block word	50
_. boards #	18
_. boards word	31
_. bracket word	43
_. brackets word	34
_. brick word	37
_. bucks #	-112
_. bucks word	-101
_. business unit	-51
_. but word	33
_. by 1	25
_. by one	22
_. by word	14
_. call word	17
_. can word	-21
_. cans word	31
_. centres ,	19
_. cents word	-60
_. clear word	17
_. clips #	31
_. coming word	47
_. dash one	-19
_. deep ,	30
_. deep .	13
_. deep word	12
_. do word	36
_. dollars word	-94
_. doors #	32
_. doors word	47
_. eight one	24
_. eight unit	-41
_. elbows word	14
_. end -s	16
_. end word	16
_. even #	44
_. extra word	53
_. fifty unit	52
_. fifty word	-49
_. flat word	25
_. for word	17
_. forty #	-40
_. four one	-12
_. from word	22
_. goes word	-31
_. going word	-46
_. good one	38
_. good word	-27
_. got -ed	-32
_. half unit	33
_. hangers word	19
_. has unit	-18
_. has word	-65
_. he -s	-21
_. he's word	-20
_. high ,	62
_. high word	24
_. hinges word	46
_. hole word	-90
_. i word	27
_. i'm word	-13
_. if word	22
_. in 1	-28
_. in one	-51
_. in unit	-43
_. in word	32
_. instead word	35
_. is -ed	-23
_. is unit	20
_. is word	-113
_. it -s	-20
_. it's one	61
_. it's word	-54
_. joist -s	31
_. k word	-43
_. kinds word	-67
_. larch Name	-24
_. last word	-33
_. layer word	-73
_. layers word	59
_. left #	76
_. left .	15
_. left unit	25
_. leg word	-24
_. long #	42
_. long word	38
_. man word	-38
_. more #	29
_. more -s	20
_. more one	20
_. more unit	47
_. more word	14
_. new -s	20
_. new word	65
_. nine one	-42
_. ninety one	-37
_. nos .	50
_. not 1	48
_. not word	-52
_. nothing word	-62
_. now word	-12
_. o'clock word	-46
_. oc ,	33
_. oc word	17
_. of 's	-16
_. of 1	55
_. of one	-37
_. of unit	71
_. off word	57
_. oh word	42
_. old word	20
_. on Name	-32
_. on one	28
_. on unit	-26
_. on word	26
_. one one	-55
_. out word	-19
_. outlets word	51
_. over one	-29
_. panel word	-95
_. part word	-64
_. per word	63
_. pickets word	25
_. pm word	-52
_. pulls word	15
_. quid #	-52
_. reads one	-20
_. says word	-42
_. screw word	21
_. screws .	15
_. screws word	43
_. second #	-62
_. second word	-26
_. seven #	-19
_. seven one	-20
_. seven word	-13
_. shelf -s	66
_. shelves word	27
_. short word	48
_. should word	31
_. side word	-56
_. so 's	-15
_. so letter	38
_. so one	-28
_. so word	17
_. spare word	32
_. stainless word	29
_. starts word	-19
_. studs word	17
_. ten unit	42
_. that -s	-53
_. the 's	-34
_. then word	17
_. they word	13
_. things word	-72
_. this -ing	-38
_. three one	29
_. three unit	15
_. tile word	25
_. tiles word	31
_. times #	-37
_. times 's	-60
_. times word	-61
_. to 1	14
_. to one	-97
_. to word	36
_. today #	-32
_. tomorrow .	-25
_. tomorrow word	-71
_. treads #	39
_. twelve unit	28
_. twenty one	-33
_. two one	-37
_. two unit	29
_. up word	23
_. used .	36
_. wants word	-48
_. was word	-29
_. wax word	16
_. way word	-88
_. ways word	-37
_. we word	-56
_. when word	31
_. white word	38
_. wide ,	32
_. wide word	21
_. windows #	18
_. windows word	14
_. wire -s	58
_. with unit	-34
_. with word	-14
_. wrongs n't	-39
_. x 1	68
a _. #	35
a _. one	-32
a _. word	-27
a a	-37
a aa	33
a about	-98
a across	50
a aff	49
a after	-27
a again	-15
a ain't	57
a air	-26
a alder	-49
a alive	-25
a all	-35
a along	52
a already	-18
a also	56
a am	-29
a amp	-29
a an	-47
a anchor	34
a anchors	20
a and	19
a another	-51
a are	35
a area	-45
a arm	26
a as	-59
a ask	-47
a at	-34
a ave	-13
a away	-27
a back	99
a bad	59
a bag	60
a bags	32
a ball	32
a balusters	-26
a bar	47
a base	24
a bases	-27
a bath	47
a bathroom	-60
a baths	68
a batts	-24
a be	21
a because	44
a bedroom	-83
a bee	-18
a been	-16
a before	-47
a behind	40
a below	28
a belts	18
a bent	-42
a better	-41
a between	-25
a big	34
a bit	53
a black	76
a blade	56
a blank	33
a blind	-59
a blinds	38
a block	18
a blocks	40
a blue	-37
a boards	106
a bolt	62
a bolts	70
a bone	-52
a book	-31
a boots	-30
a bottom	22
a bought	50
a box	81
a bracket	70
a brackets	21
a brass	105
a bravo	-25
a breakers	-45
a brick	39
a broke	-15
a broken	60
a brought	-17
a brown	14
a brushes	35
a bucket	36
a bucks	-109
a buddy	-73
a building	31
a built	-47
a bulbs	47
a bullnose	-28
a burned	58
a business	-64
a but	79
a buzzer	-55
a buzzes	-19
a by	25
a c	-17
a cabinet	-40
a cable	-59
a call	-18
a came	14
a can	91
a can't	-43
a cans	43
a cap	80
a carpet	-14
a carton	-23
a case	37
a casing	29
a ceiling	36
a center	87
a centers	131
a centre	44
a centres	32
a cents	-60
a chance	-37
a change	21
a changed	13
a charged	-18
a chimney	42
a chipped	57
a chrome	-13
a circuit	41
a clamps	74
a clip	18
a clips	111
a closer	26
a closet	30
a coat	-85
a code	45
a coffee	69
a coil	30
a cold	43
a color	-27
a colour	-24
a come	-35
a comes	-39
a coming	65
a concrete	-36
a copper	-54
a cord	-29
a cost	-42
a countertop	-14
a couplings	53
a court	-28
a cove	15
a cover	24
a covers	-34
a crack	-30
a cracked	50
a crown	-28
a cut	-13
a d	17
a dash	-36
a day	-74
a days	-67
a dead	32
a deck	32
a decks	47
a deep	92
a degrees	-23
a dialed	16
a different	28
a dimmers	13
a dining	-24
a disposal	-63
a does	-46
a doesn't	-15
a dollar	-106
a dollars	-122
a don't	-68
a done	-21
a dont	31
a door	-26
a door's	62
a double	39
a doubled	17
a downspouts	19
a dozen	-94
a drawer	-14
a driveway	-76
a drop	44
a drops	57
a dryer	-83
a duct	51
a each	59
a edge	64
a eggshell	70
a eight	27
a eighteen	24
a eighths	-29
a eights	28
a eighty	-34
a either	-50
a elbow	45
a elbows	74
a electrician	33
a eleven	-42
a em	117
a end	13
a euro	-131
a even	45
a every	26
a exit	-13
a expansion	49
a extra	40
a face	29
a fan	74
a faucet	-14
a feet	-20
a fifteen	14
a fifties	-49
a filter	28
a filters	12
a find	-74
a finish	-37
a finished	29
a five	26
a fixed	31
a flapper	-57
a flat	96
a flex	-57
a floor	18
a flowing	13
a flue	16
a foot	50
a footers	70
a footings	15
a for	19
a forgets	-25
a forgot	-15
a form	-43
a forty	45
a found	-38
a fours	46
a fourteen	52
a frame	12
a framed	-56
a friday	44
a fridge	19
a from	26
a front	-13
a ft	-24
a full	41
a furnace	-27
a g	14
a gal	15
a gallon	-58
a gang	-70
a garage	70
a gasket	59
a gate	-26
a gate's	-44
a get	-29
a gets	-46
a gfci	21
a give	88
a glass	57
a glue	-45
a glued	-64
a goes	38
a going	33
a gonna	31
a good	45
a got	15
a grade	74
a grand	-39
a grate	-59
a gray	20
a grease	13
a green	20
a ground	-40
a grout	52
a guy	-103
a guys	-55
a half	44
a hall	46
a hand	-64
a handle	-130
a hang	-52
a hangers	106
a has	-90
a hatch	-41
a have	39
a he	-51
a he'll	-26
a he's	-47
a head	41
a heads	-59
a heater	-17
a heavy	16
a here	22
a high	28
a him	-91
a hinge	30
a hinges	-12
a his	13
a holding	36
a hole	-102
a holes	45
a hollow	-12
a home	-12
a homeruns	-46
a hook	-36
a hooks	17
a hose	21
a hour	-32
a house	76
a how	28
a hums	-77
a hundred	18
a hydro	-51
a i	-84
a i've	72
a if	-22
a inch	40
a inches	67
a inside	-36
a instead	46
a into	46
a is	-33
a ish	-53
a island	-37
a isn't	40
a it	-44
a it'd	-17
a it's	-49
a its	-35
a jacks	20
a job	-20
a joist	23
a just	-55
a k	-69
a key	-56
a keys	-15
a kind	30
a kinds	-67
a kit	61
a kitchen	14
a knobs	31
a lag	15
a lags	13
a lamp	36
a landing	30
a larch	-24
a laser	39
a last	-59
a latch	20
a latest	-73
a lath	-35
a laundry	54
a lavs	45
a layer	-107
a layers	59
a layout	23
a lazy	-33
a lead	16
a leak	41
a leaks	-89
a leaning	15
a leave	-14
a leaves	32
a left	44
a leg	46
a legs	40
a let	-25
a lid	61
a lift	-99
a light	62
a like	-71
a lime	46
a line	12
a lines	13
a lintel	25
a live	20
a load	-25
a lock	-36
a long	122
a longer	23
a longer _	-30
a look	-50
a lot	-88
a m	-22
a man	-35
a maple	-44
a master	-31
a mate	-70
a max	55
a me	-23
a mesh	17
a meter	73
a mil	20
a mill	-44
a min	-29
a minimum	59
a mirror	13
a mm	27
a monday	-46
a more	61
a morning	-122
a move	79
a moved	-82
a must	-48
a my	20
a n	39
a nail	-13
a nails	77
a needs	-66
a new	35
a new _	-33
a newels	12
a next	22
a night	-66
a nine	-25
a ninety	27
a noon	-42
a nos	50
a not	-17
a nothing	-53
a now	39
a number	47
a nuts	61
a o'clock	-82
a oc	48
a of	26
a off	30
a office	-17
a offset	-38
a oh	-43
a ok	-37
a old	52
a on	35
a one	19
a open	-65
a opened	22
a opening	-26
a order	51
a ordered	46
a other	-37
a outlet	-12
a outlets	55
a outside	-45
a outta	-29
a over	-14
a owner	33
a packers	-107
a paint	18
a pan	35
a panel	-89
a panels	79
a park	-92
a part	-64
a parts	37
a pass	-15
a past	-97
a patch	-55
a pavers	18
a people	-16
a per	77
a permit	-29
a pick	-13
a pickets	45
a pieces	12
a piers	37
a pine	80
a pinned	25
a pins	37
a pipe	63
a pitch	15
a place	-31
a plan	-13
a plaster	67
a plate	61
a plates	14
a play	-45
a please	24
a plugged	48
a plugs	30
a plumb	14
a plumber	-26
a ply	-59
a pm	-67
a point	-28
a pole	-121
a pop	-49
a poplar	15
a porcelain	24
a porch	-61
a post	46
a posts	26
a potato	-84
a pound	-45
a power	-20
a pressure	23
a primed	17
a primer	87
a pull	27
a pulled	-18
a pulls	74
a punch	-43
a pvc	-33
a quid	-62
a quiet	-32
a quit	-66
a radiator	47
a ran	28
a rang	-37
a read	-33
a reads	-21
a ready	-64
a receps	18
a red	30
a reducer	65
a remain	56
a rest	34
a return	27
a return's	-16
a right	-13
a rim	14
a ring	72
a rise	30
a rm	24
a rod	22
a rods	37
a roller	14
a rolls	13
a roof	-47
a room	31
a rough	27
a round	15
a run	-21
a rungs	31
a runs	-13
a s	22
a safe	50
a said	-68
a sand	17
a sash	15
a satin	56
a saturday	26
a says	-24
a sconces	25
a scratched	29
a screwed	40
a screws	74
a seal	16
a sealed	48
a second	-62
a see	-32
a sent	16
a seven	-20
a seventh	-58
a seventy	75
a sharp	-72
a she	30
a she's	-38
a shed	68
a shelf	16
a shelves	18
a shims	42
a short	101
a shower	-35
a shows	-40
a shut	-41
a shy	-20
a side	50
a single	17
a sink	83
a site	-29
a six	36
a sixteen	108
a sixteenth	-13
a sixty	-36
a slab	58
a slope	66
a slow	-72
a smells	-16
a smoke	22
a so	18
a sockets	-27
a soft	16
a some	41
a somebody	-32
a something	-21
a somewhere	-35
a sound	-50
a spacers	49
a spans	14
a spare	36
a spec	-24
a split	-16
a spout	47
a spring	-38
a square	-64
a stacked	21
a stainless	42
a stair	-27
a stairs	-46
a starts	-19
a stays	24
a step	-65
a stick	34
a sticks	-38
a still	-68
a stone	-84
a stops	-28
a store	34
a story	-37
a straight	-51
a strapping	39
a straps	36
a street	-13
a strip	13
a stroke	-49
a stuck	-17
a stud	34
a studs	105
a suction	53
a sunday	-33
a supplier	-32
a supply	70
a supposed	20
a swap	-66
a swapped	-24
a sweep	46
a switch	64
a switches	26
a tag	-49
a take	39
a takes	30
a tall	49
a tank	14
a tap	86
a tape	104
a tee	49
a tees	40
a tell	-37
a tens	36
a tested	-33
a that	-30
a that's	-31
a the	-12
a them	-18
a them's	-16
a then	-35
a there	24
a there's	-32
a thereabouts	-39
a thermostat	15
a these	30
a they	-51
a they're	101
a thick	56
a thing	-98
a things	-99
a think	-27
a third	16
a thirteen	-15
a thirty	16
a this	-34
a those	-69
a threes	-70
a thursday	-20
a tile	69
a tiles	41
a time	-18
a times	-139
a to	33
a today	-19
a together	-119
a toilet	48
a told	-32
a tonight	17
a too	-82
a top	54
a total	65
a touch	-44
a towel	38
a track	18
a trap	20
a traps	27
a tray	-15
a tread	-68
a treads	37
a treated	-26
a trimmed	15
a trips	-13
a truck	32
a tub	76
a tube	39
a tubes	-19
a tuesday	-26
a turn	14
a turned	-53
a turns	-21
a twelve	-15
a twenty	58
a twice	28
a type	32
a under	-28
a unit	-70
a units	34
a up	29
a upper	39
a uppers	-34
a upstairs	-54
a us	-100
a usb	15
a use	28
a used	12
a v	-50
a valve	64
a van	62
a vent	41
a vinyl	65
a wafers	24
a wall	63
a walls	-14
a wants	25
a was	-15
a washers	35
a waste	30
a watch	-62
a water	-69
a way	-32
a ways	-78
a we're	21
a wednesday	20
a week	-84
a went	38
a were	23
a wet	-28
a whatever	-71
a when	-16
a where	27
a which	50
a while	21
a white	28
a whole	-48
a wide	80
a windows	40
a wire	15
a wired	24
a wires	13
a with	41
a won't	-50
a wood	-20
a word	-55
a work	37
a works	-56
a wrong	-30
a wrongs	-39
a x	59
a yard	-71
a yet	-73
a you	-41
a you're	73
a zip	-99
a zone	-14
about _. word	25
above _. word	20
after _. .	-54
after _. word	-28
air _. ,	18
all _. word	45
an _. word	-87
and _. #	-81
and _. -ing	58
and _. -s	26
and _. 1	13
and _. letter	33
and _. one	78
and _. unit	77
and _. word	52
and a _	58
and about _	21
and it's _	-72
and the _	15
another _. .	-29
another _. word	-28
apartment _. word	-36
are _. word	47
at $ _	-15
at _. #	18
at _. ,	13
at _. -	44
at _. -s	48
at _. .	20
at _. Name	-19
at _. one	-42
at _. unit	13
at _. word	-36
at number _	-35
at the _	-13
b a	-13
b about	46
b above	46
b actually	18
b add	87
b adhesive	72
b after	-36
b again	-14
b against	-16
b air	22
b allow	67
b already	22
b alright	-35
b am	-17
b amp	58
b amps	118
b an	-66
b anchors	51
b and	33
b another	-29
b anti	18
b any	-48
b anything	56
b apart	24
b apartment	-88
b apiece	33
b approximately	12
b are	86
b arrived	77
b as	50
b ask	-32
b asked	50
b back	-25
b badge	-29
b bag	31
b bags	46
b balusters	-26
b bar	79
b base	-16
b basement	-67
b bases	21
b basin	41
b bath	-75
b bath's	31
b bathroom	-19
b batts	-21
b bay	-49
b because	36
b bed	-86
b bedroom	-109
b been	60
b before	-52
b behind	24
b below	-31
b belts	65
b bench	30
b bent	55
b beside	18
b better	66
b between	-57
b big	-37
b billed	-65
b bin	-71
b black	56
b blade	-23
b bldg	-41
b blinds	20
b block	-35
b blood	-89
b board	-15
b bolt	36
b bolted	30
b bolts	74
b book	20
b booked	-76
b born	-13
b both	-65
b bottom	-70
b bought	42
b box	-24
b bracket	28
b brackets	95
b brass	21
b breaker	-63
b breaker's	53
b breakers	64
b bring	148
b bringing	64
b broke	87
b broken	-13
b brought	107
b brushed	-37
b bucket	-13
b building	-68
b built	17
b burned	55
b but	31
b buy	61
b by	22
b c	23
b cabinet	-41
b call	-45
b called	-33
b calls	74
b came	118
b camera	-44
b can	-27
b can't	15
b cans	56
b cap	-19
b card	22
b carpet	-45
b cartons	-26
b cat	-60
b catch	-32
b caulk	-21
b cause	50
b cbd	12
b ceiling	24
b cell	-80
b center	84
b centres	47
b cfm	47
b change	43
b changed	71
b channel	-94
b chapter	-31
b charge	-53
b charged	-96
b check	13
b checked	-45
b church	15
b circuit	-75
b claim	-19
b class	-43
b cleaned	46
b clip	37
b clips	56
b close	-59
b closer	43
b closet	12
b cloud	-16
b coat	-37
b code	-89
b code's	-99
b cold	55
b come	-80
b company	-44
b concrete	-23
b confirmation	-43
b control	59
b copper	31
b cord	29
b cost	-66
b counted	-22
b counter	-65
b cousin	-13
b cover	57
b covers	30
b crack	30
b crew	-14
b cut	46
b cutout's	22
b cylinders	20
b dash	-33
b day	-99
b dead	25
b deck	25
b deep	63
b degrees	34
b delivery	-21
b desks	53
b detail	-86
b did	-59
b didn't	-34
b dining	-31
b do	-43
b dock	-57
b dog	-70
b don't	-31
b door	-70
b doors	-44
b double	53
b down	54
b downspouts	18
b dozen	35
b drain	28
b drawer	-44
b drawing	44
b drill	19
b dropped	20
b dry	13
b dryer	-18
b drywall	-45
b duct	33
b dug	25
b dye	-18
b e	-31
b each	36
b east	-46
b edge	32
b egress	-63
b eight	58
b eighteen	34
b eighths	98
b eighty	-41
b elbows	43
b electrician	-46
b eleven	35
b em	20
b end	40
b ends	-14
b exam	-30
b except	70
b exit	-74
b extension	-34
b extra	24
b f	17
b falls	-56
b far	67
b feeds	-27
b feet	58
b fence	12
b field	25
b fifteen	57
b figure	50
b figured	-14
b filter	14
b fine	-49
b finish	-20
b finished	24
b first	-19
b fitted	-43
b five	19
b fix	-39
b flight	-41
b flue	54
b foot	33
b footers	41
b footing	29
b footing's	48
b forget	37
b found	80
b fourteen	50
b framing	-32
b fresh	13
b friday	-25
b fridge	31
b from	-45
b front	-68
b ft	19
b full	57
b g	-48
b gal	-16
b gallon	54
b gallons	76
b gang	24
b gap	76
b garage	70
b gate	-72
b gate's	-17
b gauged	85
b gave	19
b get	76
b give	-58
b glass	27
b glue	95
b glued	40
b goes	-12
b going	-15
b gone	34
b good	15
b got	57
b gotta	39
b grab	84
b grade	17
b ground	-13
b guide	-58
b guy	-34
b guys	-73
b had	76
b half	26
b handrail's	20
b hangers	58
b hardware	16
b has	71
b hatch	-49
b have	88
b he	-60
b he'll	-55
b he's	-127
b head	70
b header	22
b header's	67
b heat	-34
b heavy	-14
b her	-63
b here	-73
b hidden	12
b high	21
b him	-102
b hinge	34
b hinges	-84
b his	-119
b hit	18
b hold	34
b holding	38
b hole	51
b hole's	22
b holes	19
b homeruns	-46
b hood	36
b hot	-37
b hour	-88
b house	-30
b how	32
b humidity	62
b hundred	31
b hung	74
b i'd	-19
b i'll	36
b i'm	46
b i've	60
b if	45
b in	-15
b inch	68
b inches	22
b inside	72
b inspector	-41
b install	-30
b insulation	-37
b into	54
b invoice	-93
b island	84
b it	14
b it'll	48
b it's	-20
b item	-37
b its	43
b itself	-34
b jan	73
b job	-36
b joists	56
b just	78
b k	-60
b key	-78
b kind	94
b kit	39
b kitchen	49
b knobs	27
b l	71
b l1	20
b label	37
b ladder	18
b lady	-53
b lags	38
b laid	39
b last	56
b lb	52
b leafs	-24
b leave	-16
b leaves	69
b led	58
b left	33
b leg	69
b lengths	53
b less	39
b let	55
b level	-92
b license	-15
b lid	49
b light	-15
b lights	51
b like	22
b line	24
b linen	16
b lining's	13
b list	-19
b listen	-14
b little	-60
b living	-37
b load	65
b lobby	36
b lockbox	-52
b longer	-30
b loop	-39
b loose	58
b lost	-16
b lot	-103
b lounge	60
b lumber	-52
b lunch	-14
b lvl	-65
b m	-37
b main	18
b make	59
b man	-31
b marble	86
b mark	-65
b mat	-28
b mate	-42
b max	58
b maybe	35
b measure	-90
b measures	-57
b medium	57
b meter	71
b metre	14
b metres	66
b middle	-13
b mike	-54
b millimeter	12
b mirror	60
b mirror's	16
b miss	-19
b missing	49
b mix	28
b mm	86
b model	-14
b moisture	30
b mon	-81
b monday	-23
b moon	-65
b more	27
b morning	32
b mortar	30
b mounted	53
b mrs	-47
b mud	-21
b must	45
b my	-42
b myself	-35
b nail	31
b nailed	70
b near	-56
b need	97
b needs	58
b next	-97
b nice	-29
b niche	27
b night	-18
b nineteen	-21
b no	64
b nobody	-82
b none	44
b nosing	-14
b not	-18
b note	-43
b nothing	57
b now	74
b number	-180
b number's	-45
b nuts	25
b of	27
b off	28
b office	-22
b oh	-23
b ohm	24
b ohms	38
b oil	-77
b ok	-22
b okay	-93
b old	-73
b one	-33
b only	69
b open	-71
b opening	51
b opening's	30
b option	-53
b or	-14
b order's	-13
b ordered	71
b other	-14
b out	28
b outlet	-37
b outside	14
b oven	48
b over	30
b owe	25
b owes	-42
b owner	-42
b p	-46
b packed	42
b page	-54
b paid	-82
b paint's	-52
b painted	-50
b pallet	12
b pan	-23
b panels	31
b pantry	-24
b paper	-55
b patch	61
b pcs	-61
b percent	33
b permit	-58
b phase	-41
b phone	-15
b pick	107
b picked	-32
b pinned	22
b pipe	61
b pitch	-13
b place	-39
b plan	-33
b plaster	66
b plastic	-28
b plate	-22
b plates	36
b please	102
b plot	-41
b plug	28
b plus	46
b ply	21
b po	-63
b point	53
b pole	-83
b poly	-60
b porch	19
b post	39
b posts	-15
b poured	30
b press	-18
b pressure	-47
b pressure's	90
b primed	-23
b primer	-21
b psi	78
b pu	43
b pulled	-64
b pulling	56
b pulls	21
b pump	35
b purchase	-13
b put	96
b qt	43
b quarter	-55
b quiet	-42
b r	-93
b rack	-81
b rail	24
b range	34
b rapid	-42
b rated	60
b rcbo	31
b re	-53
b read	71
b reading	71
b reads	72
b real	39
b rebuilt	45
b red	28
b ref	-21
b rehang	18
b relief	89
b rental	-82
b replaced	18
b reset	36
b return	79
b rev	-62
b reveal's	91
b rh	96
b ring	-19
b ripped	26
b rise	86
b riser	-84
b rm	-91
b road	-51
b rock	46
b rod	26
b roll	14
b roller	22
b rolls	-60
b roof	-52
b room	-80
b roughed	44
b round	-32
b route	-55
b row	-89
b rtu	-88
b rubber	-39
b run	-40
b running	37
b s	30
b said	27
b same	-57
b sand	-69
b sanded	-36
b sanding	19
b sandstone	16
b saturday	-59
b saves	-44
b saw	-52
b say	39
b saying	16
b says	42
b scale	-16
b sch	-61
b screen	16
b screw	26
b screwed	49
b screws	30
b seal	-62
b sealer	31
b seat	44
b section	-54
b see	-17
b send	-82
b sent	79
b serial	-50
b set	138
b seventeen	15
b seventy	36
b she	-42
b she's	-42
b shear	40
b sheet	-67
b sheets	29
b shelf	33
b shellac	29
b shelves	41
b shim	-66
b short	147
b shorted	82
b shot	52
b should	57
b should've	76
b shower	-70
b side	36
b sides	15
b silicone	19
b sill	79
b since	-44
b sink	13
b sister	19
b site	-91
b sits	16
b six	60
b sixteen	20
b sixteenth	20
b sixty	104
b slab	56
b smoke	-14
b snapped	-26
b snow	31
b so	26
b soft	27
b somebody	76
b something	-54
b sorry	50
b space	27
b spacing	85
b span's	33
b spare	37
b spec	57
b square	23
b squeak	66
b stain	-24
b stair	-74
b stairs	-37
b start	-25
b stat	42
b static	41
b static's	43
b steps	28
b sticks	-21
b still	17
b stitch	-44
b stock	36
b stone	64
b stop	-14
b straight	-24
b strike	29
b strip	-31
b strong	13
b stuck	21
b stud	50
b studs	28
b stuff	83
b suite	-46
b superheat	83
b supply	54
b supposed	-46
b swap	-17
b swapped	64
b swing	-13
b switch	-13
b table	-51
b tag	-48
b take	-30
b takes	-72
b tank	-47
b temp	98
b ten	-43
b tenant	-51
b th	-38
b that's	-31
b their	-63
b them	32
b then	-13
b thermostat	56
b they're	-101
b thing	-31
b think	-26
b third	31
b thirteen	113
b thirty	-42
b this	-55
b those	-17
b though	64
b three	70
b threshold	-31
b through	28
b throw	78
b thursday	-79
b ticket	-77
b tied	31
b tight	52
b til	-50
b tile	26
b tiles	50
b time	-25
b times	-56
b tip	-38
b to	39
b toast	51
b today	-35
b toilet	69
b tomorrow	-28
b too	26
b took	51
b top	-35
b topped	13
b total	64
b trailer	-89
b trap	48
b tray	33
b tread	-45
b treads	35
b truck	51
b trunk	17
b tube	58
b tubes	24
b turn	-22
b turned	-61
b twelve	108
b twenty	34
b twice	81
b two	23
b txt	-33
b type	-56
b u	-45
b under	83
b unit	-69
b up	39
b uppers	44
b upstairs	29
b us	-16
b used	133
b v	-40
b valve	98
b van	97
b vanity	68
b vent	35
b volts	53
b w	47
b wait	41
b walk	-34
b wall	83
b wall's	70
b walls	-29
b walnut	-58
b want	91
b wanted	65
b wants	64
b wardrobe	-30
b was	-48
b washer	27
b water	-23
b wax	-21
b way	-43
b we'll	15
b we're	21
b wednesday	-64
b week	-49
b well	20
b went	62
b were	-27
b wet	50
b what	17
b what's	-48
b when	50
b white	69
b whole	-23
b wide	63
b width	65
b window	-71
b windows	51
b wire	43
b with	53
b won't	53
b works	-13
b would	13
b yard	-81
b yards	-13
b year	-37
b yesterday	45
b you	16
b your	-77
b zero	-61
b zone	-66
back _. word	24
back at _	-38
back in _	-35
back with _	65
bare 1	-60
bare 2	68
bare 3	13
bath _. word	-66
bay _. word	-93
be _. #	47
be _. ,	35
be _. word	30
be there _	-84
bedroom _. word	-57
before _. #	-47
between _. word	-50
boards , _	30
book says _	14
bottom _. word	-19
bought _. word	74
breaker _. word	-18
breaker's a _	53
bring _. 1	20
bring _. one	39
bring _. word	55
bring me _	29
but _. word	36
buy _. .	45
buy _. word	75
by _. -ed	28
by _. .	-53
by _. letter	13
by _. unit	-56
by _. word	53
call it _	63
calls for _	53
catch _. word	-32
cell is _	-16
channel _. word	-46
chapter _. word	-31
charged me _	-13
circuit _. word	-65
claims 0	15
claims 1	12
claims 2	-38
class of _	-42
close at _	-70
coat _. word	-75
code _. word	-48
code is _	-29
code's _. word	-61
cut _. -s	47
cut _. word	48
cut me _	58
day _. .	-43
day _. word	-61
detail _. word	-43
door _. word	-47
door at _	-76
down from _	-38
down to _	41
eight _. one	-17
eight by _	15
eleven _. word	-35
every _. word	-50
except the _	-31
exit _. word	-49
extension _. #	-47
feet of _	-26
fifty - _	-17
figures 1 l. #	39
figures 1 l. +	42
figures 1 l. ,	77
figures 1 l. -ed	51
figures 1 l. -ing	23
figures 1 l. -s	34
figures 1 l. /	-74
figures 1 l. 1	-34
figures 1 l. :	66
figures 1 l. Name	-72
figures 1 l. letter	49
figures 1 l. unit	-18
figures 1 r. #	-47
figures 1 r. )	-51
figures 1 r. ,	-30
figures 1 r. -	-37
figures 1 r. -ed	41
figures 1 r. -s	100
figures 1 r. /	15
figures 1 r. 1	-15
figures 1 r. :	-64
figures 1 r. unit	-26
figures 1 r. word	29
figures 2 l. #	19
figures 2 l. $	-62
figures 2 l. 's	58
figures 2 l. -	-15
figures 2 l. -ed	49
figures 2 l. -ing	37
figures 2 l. -ly	33
figures 2 l. -s	81
figures 2 l. .	-32
figures 2 l. /	-20
figures 2 l. :	49
figures 2 l. @	42
figures 2 l. Name	-65
figures 2 l. letter	80
figures 2 l. one	-29
figures 2 l. unit	35
figures 2 r. #	-47
figures 2 r. ,	26
figures 2 r. -s	23
figures 2 r. .	52
figures 2 r. /	21
figures 2 r. 1	19
figures 2 r. :	-35
figures 2 r. letter	35
figures 2 r. unit	41
figures 2 r. word	-23
figures 3 l. $	-50
figures 3 l. ,	60
figures 3 l. -	17
figures 3 l. -s	31
figures 3 l. .	43
figures 3 l. 1	-37
figures 3 l. letter	-22
figures 3 l. unit	68
figures 3 l. word	-20
figures 3 r. #	-17
figures 3 r. ,	80
figures 3 r. -	-71
figures 3 r. -s	48
figures 3 r. .	19
figures 3 r. /	-16
figures 3 r. 1	-46
figures 3 r. :	-20
figures 3 r. letter	46
figures 3 r. word	-16
figures 4 l. #	-27
figures 4 l. 's	26
figures 4 l. ,	13
figures 4 l. -	-24
figures 4 l. unit	-26
figures 4 l. word	-50
figures 4 r. #	-56
figures 4 r. ,	14
figures 4 r. letter	-36
figures 4 r. unit	-20
figures 4 r. word	16
figures 5 l. word	-75
figures 5 r. #	-12
figures 5 r. word	-52
first _. word	-46
five _. #	-28
five _. one	-14
five by _	54
five to _	-40
flat _. ,	-73
flight _. word	-43
foot by _	20
for _. #	71
for _. -s	-47
for the _	14
for unit _	-14
form 0figures 4	-70
form figures 2	22
form figures 4	-47
form figures 5	-81
form oh	-84
form parts	60
form swallowed	16
form swallowed round	-23
form words round	13
forty by _	56
four _. #	-15
four _. word	-21
four one _	-19
from _. one	-16
from _. word	18
from the _	-45
ft , _	15
garage _. word	68
gate code's _	-42
get _. #	80
get _. .	78
get _. one	28
get _. word	82
gets _. word	12
go _. #	60
gonna be _	-67
good for _	13
got _. #	67
got _. -ing	46
got _. -s	-73
got _. unit	59
got _. word	84
grab _. word	61
had _. ,	59
had _. word	32
half _. word	-24
half and _	17
half past _	-60
has _. -s	27
has _. word	78
have _. ,	43
have _. -s	38
he wants _	21
he's _. word	-65
head at _	26
header's _. one	52
here at _	-72
hole is _	30
house _. -s	-40
house _. word	-59
house is _	-20
humidity was _	23
hundred by _	38
hung _. -s	16
hung _. word	41
i counted _	62
i drove _	22
i have _	38
i need _	-16
i put _	23
i want _	14
i'm at _	64
i'm short _	16
i've got _	36
in , _	-43
in _. #	-47
in _. ,	-69
in _. -s	-44
in and _	45
in at _	101
in bay _	-34
in bed _	-58
in rm _	-56
in the _	-43
inch _. word	52
inch and _	-15
instead of _	51
is _. #	-44
is _. ,	48
is _. .	30
is _. 1	-16
is _. one	-80
is _. unit	-38
is _. word	151
is a _	45
it _. #	78
it _. -s	-59
it _. word	53
it at _	13
it needs _	24
it to _	59
it wants _	13
it was _	-45
it's _. #	31
it's _. unit	-45
it's _. word	-27
it's a _	-44
l1 	24
l1 
	-82
l1 $	-116
l1 (	20
l1 +	73
l1 ,	38
l1 -	-44
l1 .	20
l1 4	21
l1 555	-21
l1 9	-42
l1 :	84
l1 @	48
l1 a	-14
l1 about	38
l1 above	20
l1 add	55
l1 after	-83
l1 air	18
l1 all	75
l1 an	-87
l1 and	104
l1 another	-31
l1 apartment	-88
l1 are	84
l1 b	17
l1 back	28
l1 bath	-104
l1 bay	-104
l1 be	62
l1 bed	-94
l1 bedroom	-90
l1 before	-86
l1 between	-50
l1 block	-38
l1 bottom	-42
l1 bought	101
l1 breaker	-50
l1 bring	127
l1 building	-72
l1 but	-13
l1 buy	112
l1 by	23
l1 cat	-63
l1 catch	-32
l1 channel	-54
l1 chapter	-31
l1 circuit	-82
l1 cloud	-16
l1 coat	-75
l1 code	-89
l1 code's	-74
l1 counted	71
l1 cut	105
l1 dash	-27
l1 day	-94
l1 detail	-43
l1 dock	-57
l1 door	-84
l1 down	72
l1 drawer	-38
l1 drove	22
l1 ea	-15
l1 each	-64
l1 eight	-16
l1 eleven	-46
l1 every	-41
l1 exit	-79
l1 extension	-48
l1 first	-46
l1 five	-38
l1 flat	-31
l1 flight	-43
l1 floor	-58
l1 found	105
l1 four	-37
l1 fourteen	-56
l1 from	-26
l1 gap	46
l1 garage	68
l1 get	172
l1 gets	13
l1 go	60
l1 going	65
l1 got	97
l1 grab	90
l1 grade	-27
l1 had	122
l1 half	-29
l1 has	87
l1 have	82
l1 he's	-78
l1 header's	52
l1 him	-51
l1 house	-32
l1 hung	64
l1 i'm	51
l1 in	-79
l1 inch	52
l1 invoice	-79
l1 is	37
l1 it	24
l1 it's	-38
l1 key	-83
l1 leaves	63
l1 left	37
l1 leg	-54
l1 level	-66
l1 like	23
l1 long	-26
l1 longer	-30
l1 loop	-42
l1 lot	-86
l1 maybe	104
l1 me	26
l1 missing	-34
l1 nailed	34
l1 need	115
l1 needs	60
l1 new	-66
l1 nine	-24
l1 nineteen	-50
l1 no	20
l1 not	64
l1 note	-43
l1 now	102
l1 number	-198
l1 number's	-28
l1 of	-60
l1 oh	-18
l1 old	-89
l1 on	-29
l1 one	-64
l1 only	61
l1 opening	24
l1 or	-34
l1 order	-14
l1 ordered	35
l1 out	75
l1 over	21
l1 page	-40
l1 panel	13
l1 past	19
l1 phase	-19
l1 plate	32
l1 plot	-41
l1 po	-38
l1 point	21
l1 port	-16
l1 primed	-33
l1 pulled	19
l1 pulling	60
l1 put	95
l1 quarter	69
l1 r	-74
l1 rated	51
l1 read	70
l1 reading	50
l1 reads	23
l1 replaced	63
l1 return	29
l1 right	-59
l1 rise	61
l1 riser	-79
l1 rm	-104
l1 road	-70
l1 room	-101
l1 route	-39
l1 row	-57
l1 running	37
l1 said	91
l1 saves	-44
l1 say	42
l1 says	52
l1 second	-27
l1 section	-54
l1 sent	42
l1 set	119
l1 seven	-16
l1 sheet	-69
l1 shelf	-49
l1 short	135
l1 since	-44
l1 so	118
l1 spacing	30
l1 span's	33
l1 spec	34
l1 square	-62
l1 static's	34
l1 step	-69
l1 suite	-44
l1 superheat	56
l1 supply	27
l1 switch	-66
l1 t	24
l1 takes	-75
l1 temp	60
l1 ten	-58
l1 that	-114
l1 that's	17
l1 the	-49
l1 then	33
l1 there	-46
l1 there's	22
l1 thing	-49
l1 third	-22
l1 this	-30
l1 three	-14
l1 through	38
l1 til	-43
l1 till	-66
l1 to	81
l1 tomorrow	41
l1 took	68
l1 tread	-50
l1 truck	-39
l1 twelve	-48
l1 twenty	-25
l1 two	51
l1 type	-69
l1 under	92
l1 unit	-126
l1 up	61
l1 uppers	30
l1 use	50
l1 used	109
l1 vanity	66
l1 wall	77
l1 want	70
l1 wanted	42
l1 wants	112
l1 was	37
l1 we're	25
l1 week	13
l1 were	-77
l1 which	-14
l1 with	53
l1 x	41
l1 zone	-68
l1 £	-72
l1. #	14
l1. $	-116
l1. 's	70
l1. (	20
l1. +	73
l1. ,	38
l1. -	-44
l1. -ed	54
l1. -ing	54
l1. -ly	67
l1. -s	55
l1. .	20
l1. /	-58
l1. 1	-21
l1. :	84
l1. @	48
l1. Name	-112
l1. letter	-22
l1. one	-81
l1. unit	-44
l1. £	-72
l2 	-29
l2 
	28
l2 "	23
l2 '	22
l2 (	51
l2 )	18
l2 .	-12
l2 /	62
l2 1	-80
l2 10	22
l2 14	31
l2 16	23
l2 2	-76
l2 24	-36
l2 30	-24
l2 36	12
l2 400	-34
l2 5	-21
l2 55	26
l2 555	-35
l2 6	-31
l2 60	33
l2 600	39
l2 68	51
l2 7	-26
l2 8	12
l2 9	45
l2 a	-148
l2 adhesive	-20
l2 an	-83
l2 are	22
l2 at	-63
l2 b	-15
l2 back	17
l2 bags	26
l2 bar	61
l2 be	69
l2 been	-22
l2 billed	-65
l2 boards	-13
l2 book	15
l2 bottom	28
l2 box	54
l2 boxes	24
l2 breaker's	53
l2 buy	-15
l2 by	-113
l2 c	32
l2 call	55
l2 calls	53
l2 cell	-16
l2 centres	14
l2 change	-21
l2 changed	22
l2 charged	-96
l2 class	-42
l2 close	-70
l2 closer	39
l2 closet	-31
l2 code	-18
l2 cost	-55
l2 cracked	57
l2 cut	96
l2 deep	43
l2 don't	-89
l2 done	52
l2 door	-55
l2 down	23
l2 dryer	-47
l2 each	29
l2 eight	31
l2 elbows	15
l2 em	20
l2 end	25
l2 ends	12
l2 except	-31
l2 feet	-17
l2 fifteen	43
l2 fifty	-17
l2 first	62
l2 fixed	18
l2 foot	56
l2 for	-83
l2 forty	-81
l2 four	92
l2 fourteen	22
l2 friday	-51
l2 from	-96
l2 front	-46
l2 ft	46
l2 g	-48
l2 gate	-42
l2 get	-58
l2 gets	-34
l2 give	-44
l2 go	-15
l2 gone	19
l2 good	56
l2 got	16
l2 gotta	68
l2 grab	-29
l2 half	-43
l2 hand	16
l2 have	66
l2 he	-15
l2 he's	-23
l2 head	102
l2 here	-89
l2 high	13
l2 hole	32
l2 house	-22
l2 humidity	32
l2 hung	26
l2 i	109
l2 i'd	19
l2 i'll	47
l2 i'm	102
l2 i've	38
l2 in	-36
l2 inch	51
l2 inches	73
l2 inside	37
l2 instead	51
l2 invoice	-29
l2 is	24
l2 island	13
l2 it	29
l2 joists	31
l2 leg	96
l2 lengths	61
l2 level	-59
l2 long	17
l2 loose	70
l2 lunch	-13
l2 make	92
l2 me	14
l2 meter	14
l2 mil	-73
l2 missing	96
l2 mm	78
l2 monday	33
l2 mounted	19
l2 must	21
l2 need	42
l2 nine	-16
l2 nineteen	-41
l2 no	-102
l2 noon	-21
l2 not	-78
l2 now	19
l2 number	-62
l2 oak	-15
l2 of	-89
l2 off	-43
l2 oh	-42
l2 ok	-40
l2 old	-20
l2 one	-39
l2 only	83
l2 opening	24
l2 out	-14
l2 outlets	14
l2 owes	-42
l2 paid	-82
l2 permit	-37
l2 pick	63
l2 picked	41
l2 piece	30
l2 pipe	68
l2 plaster	48
l2 plate	-65
l2 please	42
l2 pressure's	43
l2 put	74
l2 quarter	-46
l2 r	-53
l2 real	51
l2 right	45
l2 rtu	-61
l2 sanded	-75
l2 screws	16
l2 see	-28
l2 seven	30
l2 she	-27
l2 sheet	19
l2 sheets	-29
l2 shelf	86
l2 shop	-34
l2 short	51
l2 shorted	67
l2 should	57
l2 side	-27
l2 sill	40
l2 sixteen	28
l2 sixty	25
l2 space	27
l2 spec	25
l2 step	23
l2 sticks	47
l2 still	-23
l2 studs	26
l2 tell	25
l2 ten	13
l2 that	-33
l2 that's	-74
l2 the	-88
l2 there	-33
l2 they	14
l2 they're	-18
l2 third	15
l2 thirteen	14
l2 thirty	-40
l2 this	-41
l2 three	67
l2 through	-16
l2 thursday	-103
l2 ticket	-28
l2 tile	46
l2 tiles	14
l2 time	-44
l2 to	-16
l2 tomorrow	-78
l2 too	21
l2 trap	63
l2 truck	-17
l2 twelve	40
l2 twenty	59
l2 two	-95
l2 u	-50
l2 up	43
l2 used	-16
l2 wall	50
l2 want	29
l2 wants	-39
l2 was	-109
l2 we	69
l2 went	51
l2 were	96
l2 which	30
l2 white	53
l2 width	64
l2 will	31
l2 window	-60
l2 windows	43
l2 with	33
l2. "	23
l2. #	-29
l2. '	22
l2. 's	19
l2. (	51
l2. )	18
l2. -ed	16
l2. -ing	24
l2. -ly	-58
l2. -s	16
l2. .	-12
l2. /	69
l2. 1	43
l2. Name	-24
l2. letter	40
l2. n't	-44
l2. one	-33
l3 	-28
l3 
	-26
l3 "	-18
l3 #	-20
l3 (	-20
l3 )	-24
l3 ,	26
l3 .	19
l3 10	-64
l3 12	29
l3 14	39
l3 16	-45
l3 20	14
l3 24	20
l3 5	-16
l3 6	14
l3 7	-28
l3 8	39
l3 :	29
l3 a	86
l3 about	-27
l3 adhesive	16
l3 all	-58
l3 amp	14
l3 amps	72
l3 an	73
l3 apart	13
l3 apiece	33
l3 are	33
l3 at	-63
l3 bag	28
l3 bags	-19
l3 bar	-29
l3 bay	72
l3 be	-27
l3 between	-80
l3 board	-30
l3 boards	22
l3 boxes	-51
l3 but	-63
l3 buy	-44
l3 by	57
l3 call	-74
l3 came	117
l3 can't	19
l3 circuit	36
l3 clear	57
l3 comes	-41
l3 coming	19
l3 dead	-18
l3 did	-21
l3 door	18
l3 each	62
l3 eight	36
l3 em	20
l3 ends	-14
l3 except	-31
l3 extension	21
l3 extra	-18
l3 fan	-12
l3 first	-77
l3 five	-43
l3 flat	14
l3 foot	19
l3 footers	34
l3 for	29
l3 forty	-30
l3 four	26
l3 fourteen	41
l3 fridge	33
l3 from	19
l3 front	-62
l3 ft	20
l3 gal	-18
l3 gap	50
l3 get	-35
l3 glue	30
l3 glued	26
l3 go	22
l3 gone	42
l3 good	-31
l3 got	53
l3 guy	-70
l3 had	-33
l3 half	29
l3 hangers	25
l3 have	-35
l3 he	-48
l3 he's	-35
l3 her	-38
l3 here	25
l3 him	-55
l3 his	-25
l3 hole	34
l3 hood	36
l3 hooks	16
l3 hour	-47
l3 house	25
l3 hung	37
l3 i	23
l3 i'd	17
l3 i'm	58
l3 i've	31
l3 in	-83
l3 inch	85
l3 inches	-49
l3 is	-46
l3 it	-23
l3 it's	-46
l3 k	-18
l3 knobs	22
l3 lady	-30
l3 left	-37
l3 like	48
l3 lot	-17
l3 me	27
l3 metres	20
l3 missing	14
l3 mix	23
l3 mm	-16
l3 monday	17
l3 more	82
l3 morning	-40
l3 my	-29
l3 nailed	30
l3 need	-49
l3 needs	37
l3 next	-72
l3 nine	51
l3 ninety	-55
l3 no	28
l3 nobody	-73
l3 not	-26
l3 nothing	34
l3 now	-20
l3 of	26
l3 off	-47
l3 oh	53
l3 ok	-22
l3 old	91
l3 one	-44
l3 one's	-28
l3 ones	-51
l3 or	41
l3 order	-15
l3 ordered	32
l3 out	-26
l3 over	49
l3 panel	-30
l3 patch	37
l3 permit	-21
l3 pick	31
l3 plate	15
l3 poly	13
l3 psi	13
l3 put	-94
l3 quarter	32
l3 r	14
l3 rental	-49
l3 rh	16
l3 riser	-18
l3 run	28
l3 s	37
l3 says	40
l3 see	-74
l3 seven	-44
l3 seventy	38
l3 she	-49
l3 shelf	29
l3 shelves	21
l3 side	69
l3 slab	-16
l3 somebody	63
l3 spacing	52
l3 stairs	19
l3 supply	23
l3 swing	-14
l3 tape	-35
l3 temp	41
l3 ten	-91
l3 th	-29
l3 that	18
l3 the	43
l3 their	-57
l3 them	65
l3 there	54
l3 they	-24
l3 they're	-65
l3 thirteen	80
l3 thirty	34
l3 this	-21
l3 three	66
l3 thursday	45
l3 tile	50
l3 till	18
l3 time	-14
l3 to	21
l3 tomorrow	58
l3 too	60
l3 truck	39
l3 twelve	79
l3 twenty	-34
l3 two	-41
l3 under	37
l3 unit	29
l3 up	-91
l3 used	17
l3 wall	33
l3 want	28
l3 was	21
l3 we	38
l3 we're	35
l3 well	65
l3 went	20
l3 white	84
l3 wide	35
l3 x	63
l3 you	-13
l3. "	-18
l3. #	-31
l3. 's	-50
l3. (	-20
l3. )	-24
l3. ,	26
l3. -ing	30
l3. -ly	-53
l3. .	19
l3. /	-23
l3. 1	81
l3. :	29
l3. Name	52
l3. letter	35
l3. n't	31
l3. one	27
last _. word	19
left _. word	41
leg and _	42
lengths of _	58
letter - _	-41
letter -ed _	58
letter ._ 	42
letter ._ ,	22
letter ._ .	35
letter ._ for	-12
letter ._ in	-36
letter ._ x	28
letter _ #	42
letter _ ,	22
letter _ -s	-31
letter _ .	35
letter _ letter	31
letter _ unit	-30
letter _ word	-60
letter unit _	-13
letter word _	58
level _. word	-28
long _. word	-22
loop _. word	-42
lot _. word	-63
make it _	75
make that _	22
maybe _. word	82
me _. -s	-42
me _. word	71
me at _	-32
me up _	31
missing _. -s	18
missing _. word	-44
more figures 5	-46
more l. word	-43
more r. word	-17
my _. -s	-38
n't word _	-44
nailed _. word	34
need _. #	32
need _. -s	22
need _. .	53
need _. 1	51
need _. one	47
need _. unit	47
need _. word	34
need be _	15
needs _. -s	28
needs _. word	30
new _. ,	-20
new _. unit	-56
new _. word	-55
nine _. #	-16
nine and _	-57
nineteen _. #	-18
nineteen on _	-41
no , _	75
no . _	-145
no _. #	51
no _. -s	-23
not _. word	54
not the _	-19
note _. word	-43
now _. .	25
number _. #	-21
number _. -s	-55
number _. one	-19
number _. unit	-44
number _. word	-140
number is _	-58
number's _. one	-28
of _. #	-31
of _. -s	28
of _. letter	-66
of _. word	-18
of the _	25
off at _	-42
oh l. 's	-42
oh l. unit	-28
oh l. word	-42
oh r. #	-24
oh r. one	-16
oh r. word	-57
old _. word	-60
on , _	25
on . _	57
on _. -s	45
on a _	88
on all _	64
on and _	15
on door _	-61
on flight _	-43
on level _	-29
on number _	-18
on the _	-70
one , _	-56
one - _	-17
one -s _	57
one ._ 	-78
one ._ -	-29
one ._ by	46
one ._ dash	-19
one ._ five	24
one ._ four	-20
one ._ of	40
one ._ on	-22
one ._ one	-19
one ._ three	-43
one ._ two	-13
one _ #	-78
one _ -	-29
one _ one	-48
one _. #	-33
one _. one	-20
one _. word	-25
one at _	-38
one by _	26
one in _	-48
one nine _	-16
one one _	-37
one reads _	30
one to _	-43
one two _	-46
one unit _	44
one word _	-32
only _. word	-19
only got _	15
only had _	23
open at _	-54
opening is _	24
order _. #	-40
order _. .	52
order _. word	65
ordered _. word	31
out _. ,	23
out at _	-40
outlets and _	13
over _. word	18
owes me _	-20
owes us _	-24
page _. word	-40
parts l. #	29
parts l. 's	37
parts l. ,	18
parts l. -ing	19
parts l. -s	-29
parts l. letter	-31
parts l. word	67
parts r. ,	-48
parts r. -s	-52
parts r. .	74
parts r. letter	-36
parts r. unit	81
parts r. word	114
past _. #	-44
past _. word	48
phase _. -s	-19
pick up _	63
picked up _	41
plate is _	-78
plot _. word	-41
port _. word	-16
put _. -s	22
put _. unit	86
put _. word	36
put down _	91
put in _	92
quarter _. word	69
quarter and _	71
quarter past _	-21
r - _	-36
r _. unit	-36
r _. word	-42
r1 )	-38
r1 -	-59
r1 1	19
r1 10	25
r1 12	45
r1 2	56
r1 20	19
r1 3	-44
r1 4	27
r1 5	16
r1 555	-31
r1 60	29
r1 9	-13
r1 :	-95
r1 @	32
r1 a	-51
r1 aa	33
r1 about	-16
r1 above	45
r1 across	51
r1 aff	47
r1 alder	-15
r1 all	-16
r1 along	19
r1 an	-80
r1 anchors	17
r1 are	34
r1 at	24
r1 b	-21
r1 back	102
r1 balusters	17
r1 bar	47
r1 baths	24
r1 batts	-24
r1 before	13
r1 behind	17
r1 below	19
r1 blank	34
r1 block	22
r1 blocks	32
r1 board	62
r1 boards	50
r1 bolts	24
r1 bottom	13
r1 bracket	44
r1 brackets	45
r1 brass	76
r1 brick	39
r1 broke	-18
r1 broken	54
r1 bucks	-188
r1 business	-51
r1 but	17
r1 by	31
r1 call	17
r1 can	-21
r1 cans	31
r1 cement	-26
r1 centers	42
r1 centres	31
r1 cents	-60
r1 clamps	25
r1 clear	17
r1 clips	34
r1 coming	47
r1 corner	71
r1 cracked	59
r1 dash	-19
r1 dead	14
r1 deep	72
r1 do	36
r1 does	-36
r1 dollar	-106
r1 dollars	-122
r1 doors	114
r1 double	54
r1 drops	52
r1 eight	-28
r1 eighth	-17
r1 elbows	38
r1 end	26
r1 euro	-132
r1 even	54
r1 extra	65
r1 fifties	-49
r1 fifty	-31
r1 five	-17
r1 flat	35
r1 footings	15
r1 four	-36
r1 fourteen	-49
r1 from	13
r1 gets	-63
r1 go	-95
r1 goes	-46
r1 good	29
r1 got	-35
r1 had	-57
r1 half	35
r1 hand	-71
r1 hangers	33
r1 has	-82
r1 he	-23
r1 he's	-20
r1 here	27
r1 high	84
r1 hinge	32
r1 hinges	59
r1 hole	-121
r1 hundred	-22
r1 hung	37
r1 i	39
r1 i'm	-23
r1 instead	35
r1 is	-105
r1 ish	-54
r1 it	-32
r1 joist	31
r1 k	-78
r1 keys	-41
r1 kinds	-67
r1 knobs	28
r1 larch	-24
r1 last	-48
r1 layer	-107
r1 layers	59
r1 left	70
r1 lift	17
r1 long	101
r1 loose	19
r1 man	-38
r1 maple	-44
r1 max	26
r1 missing	20
r1 more	94
r1 needs	-70
r1 new	63
r1 nine	20
r1 ninety	-41
r1 ninth	-36
r1 no	24
r1 nos	50
r1 not	21
r1 nothing	-62
r1 now	19
r1 number	55
r1 o'clock	-95
r1 oc	48
r1 off	58
r1 old	22
r1 one	17
r1 or	-28
r1 outlets	82
r1 outside	14
r1 over	-26
r1 panel	-132
r1 panels	24
r1 part	-64
r1 per	78
r1 pickets	56
r1 piers	35
r1 plate	46
r1 please	18
r1 pm	-52
r1 posts	31
r1 potato	-71
r1 pulls	33
r1 put	-25
r1 quarter	-54
r1 quid	-62
r1 reads	-20
r1 receps	21
r1 reducer	31
r1 roof	-36
r1 rough	32
r1 running	34
r1 runs	82
r1 s	15
r1 says	-42
r1 screens	64
r1 screw	21
r1 screws	79
r1 second	-92
r1 seven	-17
r1 sharp	-72
r1 she	-21
r1 sheets	12
r1 shelf	-37
r1 shelves	30
r1 shims	17
r1 short	30
r1 should	31
r1 sides	-28
r1 sixty	-13
r1 smoke	36
r1 so	31
r1 spare	55
r1 stainless	29
r1 starts	-19
r1 still	30
r1 straps	55
r1 stroke	-45
r1 studs	50
r1 switch	71
r1 tall	25
r1 ten	52
r1 that	-66
r1 that's	-24
r1 the	-34
r1 thick	46
r1 thing	-27
r1 things	-82
r1 this	-37
r1 thursday	-27
r1 tile	91
r1 tiles	34
r1 times	-139
r1 to	-21
r1 today	-27
r1 toilet	66
r1 tomorrow	-69
r1 top	47
r1 total	43
r1 treads	93
r1 tub	-22
r1 twenty	18
r1 unopened	13
r1 used	38
r1 wall	22
r1 wants	-59
r1 was	-103
r1 washers	14
r1 wax	37
r1 way	-88
r1 ways	-78
r1 we	-29
r1 when	27
r1 which	13
r1 white	45
r1 wide	78
r1 windows	54
r1 wire	36
r1 wrongs	-39
r1 x	25
r1. 's	18
r1. )	-38
r1. -	-59
r1. -ing	38
r1. -ly	26
r1. -s	45
r1. /	12
r1. 1	25
r1. :	-95
r1. @	32
r1. Name	-52
r1. letter	15
r1. n't	-74
r1. one	-46
r1. word	20
r2 
	20
r2 "	37
r2 (	-39
r2 +	17
r2 .	17
r2 /	-51
r2 0142	-35
r2 1	30
r2 100	74
r2 12	110
r2 15	45
r2 2	-72
r2 20	-56
r2 30	-26
r2 34	-41
r2 35	47
r2 36	33
r2 5	-23
r2 6	36
r2 61	34
r2 7	-57
r2 72	18
r2 8	19
r2 :	-74
r2 a	-59
r2 about	-53
r2 all	-15
r2 already	27
r2 also	-61
r2 and	16
r2 are	77
r2 ask	68
r2 at	-28
r2 ave	-13
r2 back	-60
r2 bath	-22
r2 be	55
r2 bedroom	-27
r2 been	-18
r2 behind	22
r2 bolt	27
r2 bolts	35
r2 box	28
r2 boxes	28
r2 brackets	-21
r2 bring	17
r2 but	26
r2 buy	36
r2 by	-22
r2 c	-43
r2 call	-12
r2 came	-60
r2 can't	-37
r2 cap	46
r2 caps	17
r2 center	85
r2 changed	29
r2 close	54
r2 come	-45
r2 cracked	68
r2 crown	-60
r2 cut	44
r2 days	-51
r2 do	48
r2 don't	12
r2 doors	-76
r2 down	-78
r2 each	56
r2 eighteen	-33
r2 eighty	-39
r2 elbows	14
r2 eleven	-64
r2 em	103
r2 end	33
r2 epoxy	-30
r2 every	13
r2 fifty	-75
r2 filter	30
r2 filters	40
r2 fine	49
r2 five	-59
r2 footers	33
r2 for	37
r2 forty	80
r2 fourteen	40
r2 from	-17
r2 gal	15
r2 gallon	-37
r2 gang	-37
r2 get	-20
r2 glued	25
r2 go	14
r2 got	68
r2 grade	37
r2 had	33
r2 half	29
r2 hang	19
r2 hangers	50
r2 happy	24
r2 he	-28
r2 he'll	13
r2 he's	-31
r2 him	17
r2 hour	-80
r2 house	56
r2 hundred	27
r2 hung	46
r2 i	15
r2 i'll	49
r2 if	-20
r2 in	29
r2 inch	64
r2 is	46
r2 it's	-22
r2 kitchen	18
r2 latch	35
r2 lift	-46
r2 like	-21
r2 lime	46
r2 lines	29
r2 me	-44
r2 missing	29
r2 monday	-30
r2 morning	-38
r2 my	29
r2 need	-26
r2 night	-62
r2 nine	-76
r2 ninety	90
r2 no	19
r2 not	42
r2 nothing	-28
r2 now	50
r2 number	-24
r2 nuts	59
r2 of	13
r2 off	-42
r2 oh	-55
r2 old	27
r2 on	57
r2 one	-61
r2 only	12
r2 open	-41
r2 or	53
r2 order	-32
r2 over	-51
r2 pick	-14
r2 pins	22
r2 plaster	68
r2 plate	15
r2 plates	38
r2 please	14
r2 plus	18
r2 pop	-49
r2 primer	107
r2 put	42
r2 quarter	41
r2 return	29
r2 right	-41
r2 ring	67
r2 run	-14
r2 same	27
r2 sand	21
r2 says	-12
r2 screws	-20
r2 sent	18
r2 set	-58
r2 seven	-55
r2 she	13
r2 she's	41
r2 sheets	-27
r2 short	41
r2 shower	-47
r2 shy	-20
r2 side	48
r2 sixteen	53
r2 so	-29
r2 somebody	18
r2 somewhere	-46
r2 square	-27
r2 still	-75
r2 stop	38
r2 street	-26
r2 supposed	24
r2 switch	-14
r2 ten	15
r2 that	-73
r2 them	-20
r2 them's	-16
r2 there	24
r2 there's	-52
r2 these	19
r2 they	-37
r2 they're	64
r2 thing	-69
r2 third	18
r2 thirty	13
r2 this	21
r2 those	-87
r2 three	-55
r2 thursday	-37
r2 time	-32
r2 to	-16
r2 too	15
r2 treads	-18
r2 trips	-24
r2 truck	19
r2 tub	34
r2 twenty	119
r2 under	18
r2 up	-29
r2 us	-100
r2 used	32
r2 want	28
r2 wants	-12
r2 was	50
r2 way	-22
r2 we	-24
r2 we're	-32
r2 where	-28
r2 window	-34
r2 windows	-20
r2 with	12
r2 work	20
r2 x	51
r2 you	22
r2. "	37
r2. (	-39
r2. +	17
r2. -ing	32
r2. -s	48
r2. .	17
r2. :	-74
r2. Name	-83
r2. letter	53
r2. one	-22
r2. unit	51
r2. word	-13
r3 "	-35
r3 '	-60
r3 )	-21
r3 +	23
r3 -	-35
r3 /	16
r3 1	29
r3 12	33
r3 14	-28
r3 2	-13
r3 24	34
r3 3	29
r3 4	-20
r3 5	88
r3 6	-15
r3 8	53
r3 :	-55
r3 ;	-27
r3 @	12
r3 a	-29
r3 air	68
r3 and	36
r3 another	28
r3 ask	-22
r3 at	39
r3 back	-23
r3 bag	-28
r3 bags	33
r3 base	-30
r3 bath	16
r3 be	15
r3 before	-45
r3 behind	54
r3 bit	32
r3 board	-67
r3 boards	47
r3 bottom	39
r3 box	41
r3 bracket	60
r3 brackets	-67
r3 broken	43
r3 bulbs	44
r3 by	-22
r3 can	38
r3 cans	-33
r3 closet	36
r3 color	-59
r3 coming	-18
r3 corner	-18
r3 couplings	23
r3 cover	39
r3 crack	-25
r3 cracked	-68
r3 crew	-59
r3 did	-25
r3 do	-24
r3 don't	-18
r3 door	14
r3 door's	41
r3 doors	-15
r3 drawer	-50
r3 each	-14
r3 edge	26
r3 eight	30
r3 eighteen	-19
r3 em	-15
r3 end	-64
r3 fan	46
r3 feet	31
r3 fifteen	43
r3 find	-51
r3 five	-13
r3 flapper	-35
r3 flat	69
r3 floor	27
r3 footers	23
r3 for	-54
r3 form	-43
r3 forty	21
r3 four	28
r3 from	-77
r3 front	14
r3 ft	-26
r3 gang	76
r3 gap	62
r3 gets	17
r3 glass	18
r3 go	41
r3 goes	48
r3 good	-48
r3 got	65
r3 gotta	20
r3 half	-22
r3 hall	-31
r3 hangers	38
r3 has	21
r3 have	45
r3 he	-31
r3 he's	-17
r3 head	32
r3 her	50
r3 hinge	58
r3 hot	-33
r3 hums	-22
r3 hundred	-31
r3 i'll	-51
r3 i'm	-42
r3 if	-21
r3 in	-57
r3 is	-117
r3 it	15
r3 it's	43
r3 kit	22
r3 kitchen	56
r3 last	-26
r3 lazy	-46
r3 left	39
r3 leg	37
r3 legs	31
r3 lid	29
r3 lift	-77
r3 like	-30
r3 lock	13
r3 lot	-54
r3 lvl	13
r3 m	-30
r3 meter	18
r3 missing	-65
r3 monday	-34
r3 more	-36
r3 morning	-64
r3 move	19
r3 need	46
r3 needs	17
r3 new	-38
r3 nine	24
r3 ninety	-37
r3 no	-29
r3 not	45
r3 now	-53
r3 of	43
r3 one	24
r3 one's	15
r3 other	26
r3 out	120
r3 outlets	-19
r3 over	-53
r3 paint	38
r3 panel	32
r3 panels	69
r3 parts	21
r3 pavers	17
r3 people	-16
r3 permit	-17
r3 pine	38
r3 plate	29
r3 porch	-50
r3 quarter	31
r3 ran	61
r3 range	-37
r3 ring	32
r3 room	-44
r3 round	-26
r3 safe	48
r3 says	37
r3 screens	-57
r3 screws	26
r3 seal	14
r3 second	-41
r3 seventh	-55
r3 seventy	64
r3 she's	-27
r3 shop	18
r3 short	50
r3 side	-24
r3 six	-32
r3 sixteen	39
r3 so	-37
r3 spare	30
r3 sticks	-35
r3 still	-35
r3 stone	-48
r3 store	23
r3 straps	-18
r3 stripped	26
r3 studs	57
r3 supply	22
r3 switch	32
r3 tag	-39
r3 take	54
r3 tap	65
r3 tape	84
r3 ten	-60
r3 tens	26
r3 that	13
r3 then	16
r3 there	-42
r3 thermostat	-45
r3 they	-26
r3 they're	18
r3 thing	-34
r3 thirty	-23
r3 those	29
r3 tile	-15
r3 time	-22
r3 today	-39
r3 together	-60
r3 told	-13
r3 took	47
r3 top	28
r3 tread	-68
r3 tub	96
r3 tubes	19
r3 twenty	55
r3 two	-23
r3 under	-14
r3 up	17
r3 use	73
r3 used	-58
r3 van	56
r3 vanity	17
r3 vent	-42
r3 wants	70
r3 was	-13
r3 way	52
r3 we	52
r3 we're	30
r3 week	-72
r3 white	-60
r3 won't	-12
r3 wrong	-23
r3 x	38
r3. "	-35
r3. '	-60
r3. 's	31
r3. )	-21
r3. +	23
r3. -	-35
r3. -ed	56
r3. -ing	-57
r3. 1	43
r3. :	-55
r3. ;	-27
r3. @	12
r3. Name	-24
r3. letter	23
r3. n't	-47
r3. one	27
r3. word	-26
ran _. -s	54
rated _. .	23
read _. word	42
reading _. word	45
reads _. #	50
reads _. word	44
replaced _. -s	20
return _. #	25
right _. word	-27
ring and _	27
rise _. word	61
rm _. word	-30
room _. -s	-17
room _. word	-72
route _. word	-39
rtu - _	-61
rule 	-50
rule eachOf	112
rule pair	185
rule quantity/decimal	55
rule quantity/whole+taken-back	26
rule range	46
saves _. #	-44
say _. word	48
says _. one	-43
says _. word	55
second _. word	-19
section _. #	-38
section _. -s	-17
sent _. word	33
set _. word	61
set at _	-48
she wants _	23
sheet _. #	-21
sheet _. -s	-53
sheets of _	-31
short _. word	59
short by _	34
shorted us _	67
should be _	57
side _. word	36
six and _	-83
six by _	37
sixteen by _	28
size 1	-21
size 20	12
size 60	26
size 99	39
size 9999	-32
size more	-48
so _. word	72
so bring _	12
so buy _	23
so get _	46
so grab _	36
space is _	27
spacing _. word	30
span's _. word	33
square _. #	-24
square _. word	-41
step _. word	-14
suite _. word	-25
superheat _. ,	56
supply _. word	21
supply air _	18
swallowed l. 's	56
swallowed l. one	62
swallowed l. unit	-67
swallowed l. word	-48
swallowed r. #	70
swallowed r. -s	-45
swallowed r. one	18
swallowed r. unit	-27
swallowed r. word	-18
swallowed round l. 's	89
swallowed round l. -s	13
swallowed round l. one	-26
swallowed round l. unit	-44
swallowed round l. word	-16
swallowed round r. #	37
swallowed round r. -s	20
swallowed round r. unit	-15
swallowed round r. word	-61
take _. word	39
take the _	-21
ten _. word	-28
ten to _	-38
that _. -s	-42
that _. word	-66
that leaves _	63
that's _. -s	66
that's a _	15
the _. #	17
the _. -s	59
the _. one	-53
the _. unit	-60
the _. word	-66
the bottom _	-41
the first _	-46
the garage _	68
the last _	46
the left _	-87
the new _	-34
the number _	-21
the old _	-53
the other _	31
the right _	-59
the twelve _	-40
then _. word	-39
there and _	55
there by _	-57
there is _	35
there's _. -s	-46
there's _. word	27
they sent _	40
they want _	-42
third _. word	-22
thirty by _	29
this _. word	-32
til _. #	-43
till _. word	-94
time saves _	-44
to _. #	106
to _. ,	24
to _. .	41
to _. unit	-12
to _. word	19
to about _	-44
to be _	31
to square _	-38
today , _	33
took _. -s	83
took _. word	13
tread _. word	-42
truck _. word	-39
twelve _. #	-37
twelve it's _	25
twenty _. word	-25
twenty by _	16
twenty two _	22
two _. #	26
two _. one	23
two _. word	41
two and _	-44
two by _	90
type _. word	-59
u at _	-50
under _. word	39
unit 's _	25
unit + _	30
unit , _	15
unit -ed _	-46
unit -ly _	33
unit -s _	44
unit . _	-17
unit ._ 
	46
unit ._ ,	-46
unit ._ -	-35
unit ._ and	79
unit ._ by	-31
unit ._ of	56
unit ._ on	-40
unit ._ stroke	-45
unit ._ the	-24
unit ._ two	-16
unit ._ we	-13
unit ._ with	-21
unit ._ x	32
unit / _	13
unit 1 _	36
unit _ ,	-46
unit _ -	-35
unit _ -s	-63
unit _ /	46
unit _ one	-41
unit _. word	-74
unit one _	-13
unit word _	-14
units 0	-70
units 1	72
units 2	24
up _. word	46
up at _	45
up to _	61
uppers _. word	30
us _. #	47
us _. -s	-75
used _. -s	22
used _. word	67
vanity _. word	66
wall _. #	51
want _. .	26
want _. word	30
wanted _. word	42
wants _. #	20
wants _. ,	19
wants _. word	57
was _. ,	58
was _. one	-34
was _. word	56
we got _	13
we set _	67
we used _	15
week _. word	13
which _. word	-14
which is _	42
with _. -s	46
with _. one	-43
with _. word	37
with the _	-18
word $ _	-79
word 's _	47
word ( _	61
word + _	25
word , _	48
word - _	-46
word -ed _	-26
word -s _	18
word ._ )	12
word ._ ,	13
word ._ .	31
word ._ 1	21
word ._ 2	36
word ._ 20	19
word ._ 3	-59
word ._ 4	56
word ._ 555	-19
word ._ :	-58
word ._ @	37
word ._ a	-12
word ._ above	30
word ._ across	37
word ._ aff	47
word ._ all	-27
word ._ anchors	17
word ._ are	30
word ._ at	-17
word ._ back	102
word ._ balusters	17
word ._ bar	47
word ._ behind	17
word ._ block	-14
word ._ blocks	32
word ._ board	62
word ._ boards	28
word ._ bolts	24
word ._ bottom	16
word ._ brackets	34
word ._ brass	76
word ._ brick	38
word ._ broke	-18
word ._ bucks	-149
word ._ business	-51
word ._ by	55
word ._ can	-28
word ._ cement	-26
word ._ centres	31
word ._ clamps	20
word ._ deep	52
word ._ do	36
word ._ does	-36
word ._ dollars	-84
word ._ door	-13
word ._ doors	51
word ._ down	-13
word ._ drops	51
word ._ eight	-42
word ._ eighth	-17
word ._ elbows	17
word ._ euro	-105
word ._ even	29
word ._ extra	63
word ._ fifties	-49
word ._ fifty	-47
word ._ five	-36
word ._ flat	35
word ._ forty	29
word ._ fourteen	-49
word ._ gets	-34
word ._ goes	-46
word ._ going	48
word ._ good	52
word ._ got	-38
word ._ had	-57
word ._ half	34
word ._ hand	-71
word ._ hangers	21
word ._ has	-79
word ._ he	-23
word ._ he's	-22
word ._ here	27
word ._ high	22
word ._ hinge	32
word ._ hinges	28
word ._ hole	-75
word ._ i	50
word ._ i'm	-16
word ._ if	25
word ._ is	-75
word ._ ish	-54
word ._ k	-20
word ._ kitchen	-14
word ._ knobs	14
word ._ larch	-24
word ._ last	-48
word ._ left	35
word ._ leg	-41
word ._ long	55
word ._ missing	20
word ._ more	113
word ._ needs	-26
word ._ new	23
word ._ nine	33
word ._ ninth	-36
word ._ nothing	-46
word ._ now	-12
word ._ number	55
word ._ o'clock	-63
word ._ of	-16
word ._ old	22
word ._ on	25
word ._ out	-27
word ._ over	-26
word ._ panel	-123
word ._ part	-44
word ._ please	13
word ._ quid	-50
word ._ reads	-20
word ._ rough	32
word ._ says	-21
word ._ screw	18
word ._ second	-84
word ._ seven	23
word ._ she	-21
word ._ should	31
word ._ sixty	-13
word ._ so	13
word ._ spare	44
word ._ starts	-19
word ._ straps	20
word ._ studs	49
word ._ tall	25
word ._ ten	25
word ._ that	-59
word ._ that's	-24
word ._ the	-12
word ._ thing	-15
word ._ things	-54
word ._ this	-37
word ._ three	16
word ._ thursday	-27
word ._ tile	38
word ._ times	-98
word ._ today	-56
word ._ tomorrow	-56
word ._ top	47
word ._ up	22
word ._ wants	-48
word ._ was	-76
word ._ wax	32
word ._ way	-42
word ._ we	-23
word ._ when	-26
word ._ which	13
word ._ white	31
word ._ wide	42
word ._ windows	19
word ._ with	16
word ._ x	-49
word / _	-49
word : _	23
word Name _	-92
word _ 's	23
word _ )	12
word _ ,	13
word _ -ed	-25
word _ -ing	20
word _ -s	14
word _ .	31
word _ 1	28
word _ :	-58
word _ @	37
word _ Name	-48
word _ n't	-59
word _ word	-15
word letter _	-56
word one _	-32
word unit _	13
words l. #	39
words l. 's	39
words l. -ed	19
words l. .	46
words l. :	-14
words l. letter	-85
words l. one	-90
words l. unit	-36
words r. 's	28
words r. -ed	-14
words r. -ing	-19
words r. -s	15
words r. .	-80
words r. /	19
words r. 1	112
words r. Name	-52
words r. letter	32
words r. n't	-50
words r. one	-44
words r. unit	23
words r. word	16
words round l. #	-41
words round l. 's	-44
words round l. ,	-32
words round l. -	-17
words round l. -ed	-20
words round l. -s	47
words round l. one	-48
words round l. unit	-27
words round l. word	62
words round r. #	67
words round r. 's	-24
words round r. ,	26
words round r. -ing	57
words round r. -s	-16
words round r. one	-105
words round r. unit	-20
x _. #	56
x _. ,	22
x _. .	15
x _. word	-25
you at _	-63
zone _. word	-41
`;
