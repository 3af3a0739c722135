/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `

 - _	69

 _. -	-16

 _. .	-83
  _	21
 _. .	-111
 _. 1	44
 _. letter	31
 _. one	21
 _. unit	24
 _. word	21
 a _	-22
 bath _	-44
 breaker _	-24
 bring _	74
 catch _	-36
 circuit _	-44
 cut _	59
 door _	-15
 exit _	-41
 flat _	-61
 got _	102
 grade _	-24
 half _	-22
 he's _	-83
 house _	-29
 hung _	78
 it's _	-16
 its _	-19
 job _	-30
 lot _	-36
 need _	91
 on _	-32
 phase _	-18
 port _	-32
 put _	24
 r _	-48
 rack _	-41
 rfi _	-31
 rm _	-41
 room _	-28
 route _	-23
 sheet _	-44
 static's _	49
 step _	-44
 suite _	-52
 take _	52
 that's _	-24
 the _	-75
 there's _	-48
 took _	82
 truck _	-49
 unit _	-66
 zone _	-16
" , _	15
# # _	21
# 's _	17
# -ed _	63
# -ing _	-59
# -s _	38
# ._ .	-111
# ._ a	-65
# ._ at	50
# ._ by	-31
# ._ dollars	-47
# ._ doors	69
# ._ fifty	53
# ._ in	122
# ._ kinds	-66
# ._ left	102
# ._ more	-108
# ._ of	120
# ._ on	66
# ._ outlets	63
# ._ per	60
# ._ screws	91
# ._ seven	-32
# ._ times	-25
# ._ to	-64
# ._ twenty	70
# ._ way	-60
# ._ wrongs	-44
# ._ x	22
# _ .	-111
# _ 1	44
# _ letter	31
# _ one	21
# _ unit	24
# head 1	52
# head 2	68
# letter _	-48
# one _	32
# unit _	-74
# word _	-46
$ ._ 	-30
$ ._ ,	-32
$ ._ .	-37
$ _ #	-30
$ _ ,	-32
$ _ .	-37
$ _ word	-46
$ _. #	-30
$ _. ,	-32
$ _. .	-37
$ _. word	-46
$ head none	-106
' , _	27
's -ing _	107
's ._ and	55
's ._ by	53
's ._ in	32
's ._ left	44
's ._ long	44
's ._ of	-100
's ._ off	30
's _ one	-45
's _ unit	-31
's _ word	48
's head none	76
's one _	-15
's unit _	-98
( _ word	48
( _. word	48
( word _	55
) , _	58
+ _ -s	29
+ _ word	52
+ _. -s	29
+ _. word	52
+ head 0	29
+ head 1	25
+ head none	32
, $ _	-48
, 's _	50
, ._ 	39
, ._ -	-30
, ._ deep	17
, ._ left	49
, ._ of	142
, ._ wide	28
, _ #	39
, _ -	-30
, _ -s	15
, _ 1	29
, _ unit	17
, _. #	39
, _. -	-30
, _. -s	15
, _. 1	29
, _. unit	17
, and _	62
, bring _	30
, buy _	32
, day _	-55
, get _	59
, have _	48
, head 0	15
, head 1	73
, head none	28
, need _	78
, needs _	28
, order _	112
, so _	20
, unit _	-57
, used _	30
, word _	35
- ._ 	-57
- ._ -	-24
- _ #	-57
- _ -	-24
- _ word	-18
- _. #	-57
- _. -	-24
- _. word	-18
- head 1	24
- head none	-51
-ed , _	85
-ed ._ 	-27
-ed ._ .	73
-ed ._ of	20
-ed ._ on	-62
-ed ._ times	-65
-ed / _	-19
-ed _ #	-27
-ed _ .	73
-ed head none	22
-ed one _	-38
-ed unit _	21
-ed word _	21
-ing ._ 	60
-ing ._ and	33
-ing ._ by	43
-ing ._ more	-23
-ing ._ wide	17
-ing _ #	60
-ing _ -s	33
-ing _ word	34
-ing head 0	33
-ing unit _	-23
-ing word _	46
-ly _ word	32
-ly head none	77
-ly word _	-47
-s , _	24
-s . _	55
-s ._ 	25
-s ._ ,	80
-s ._ .	67
-s ._ and	-30
-s ._ by	22
-s ._ in	-16
-s ._ more	33
-s ._ of	-65
-s ._ so	51
-s ._ the	-48
-s ._ to	-44
-s ._ windows	18
-s : _	40
-s _ #	25
-s _ ,	80
-s _ -ing	-22
-s _ -s	23
-s _ .	67
-s _ one	-42
-s _ unit	29
-s _ word	24
-s head 0	23
-s head 1	79
-s head none	28
-s unit _	-72
-s word _	30
. 
 _	-16
. $ _	-49
. -ed _	62
. ._ )	-54
. ._ :	-16
. ._ of	-48
. / _	-16
. _ )	-54
. _ -s	31
. _ :	-16
. _ word	22
. _. )	-54
. _. -s	31
. _. :	-16
. _. word	22
. bath _	-62
. bring _	33
. get _	72
. have _	70
. head 0	31
. head 1	16
. need _	56
. order _	133
. used _	47
/ - _	69
/ ._ -	-16
/ ._ .	-57
/ _ -	-16
/ _ .	-57
/ head none	-83
0 figures 1	29
0 l 	-35
0 l. #	-35
0 l. word	38
0 r. one	-18
0 r. word	-25
0 words round	-22
0figures 4 1 word	-16
0figures 4 l. -	-36
0figures 4 l. 1	-24
0figures 4 r. #	-18
0figures 4 r. word	-27
1 , _	-63
1 - _	-43
1 -s _	19
1 . _	43
1 ._ 	-19
1 / _	20
1 1 _	-71
1 : _	23
1 _ #	-19
1 _ 1	-89
1 _ word	51
1 figures 1	65
1 head none	-19
1 l 	51
1 l 
	-38
1 l ,	53
1 l .	38
1 l and	74
1 l another	-127
1 l at	74
1 l bath	-66
1 l be	25
1 l bottom	-47
1 l bring	79
1 l but	-65
1 l buy	81
1 l every	-114
1 l from	32
1 l get	140
1 l got	67
1 l in	47
1 l it	28
1 l it's	-20
1 l last	-141
1 l left	-30
1 l me	75
1 l need	52
1 l new	-102
1 l no	-47
1 l of	41
1 l old	-89
1 l on	-16
1 l only	33
1 l order	29
1 l other	-126
1 l put	67
1 l right	-70
1 l second	-51
1 l short	70
1 l so	16
1 l square	-61
1 l that	-151
1 l that's	-42
1 l the	-245
1 l there's	70
1 l third	-25
1 l this	-70
1 l which	-16
1 l with	-16
1 l. #	51
1 l. ,	53
1 l. -ing	-73
1 l. .	38
1 l. /	-38
1 l. word	-57
1 letter _	73
1 parts	100
1 r 	29
1 r 
	22
1 r )	-15
1 r ,	-18
1 r -	-54
1 r 1	23
1 r and	-26
1 r at	-39
1 r before	-42
1 r behind	40
1 r bracket	41
1 r by	35
1 r can	28
1 r door	42
1 r end	-51
1 r from	-46
1 r hand	-77
1 r has	-64
1 r he	-19
1 r i	-46
1 r is	-131
1 r it's	-19
1 r left	-42
1 r new	69
1 r nine	48
1 r of	-241
1 r off	30
1 r on	-45
1 r out	-29
1 r over	-23
1 r panel	-92
1 r side	-23
1 r so	-57
1 r spare	31
1 r they	-22
1 r thing	-45
1 r to	-59
1 r tomorrow	25
1 r two	-51
1 r was	-25
1 r way	-31
1 r with	-72
1 r. #	29
1 r. 's	-27
1 r. )	-15
1 r. ,	-18
1 r. -	-54
1 r. -ing	65
1 r. -s	-95
1 r. /	22
1 r. 1	70
1 r. one	50
1 r. word	-39
1 unit _	-25
1 word _	28
1 words	-53
10 - _	-15
12 figures 1	-17
12 l 	15
12 l 
	-33
12 l ,	-15
12 l -	16
12 l .	-37
12 l :	61
12 l a	79
12 l after	-42
12 l all	111
12 l and	44
12 l are	15
12 l at	-114
12 l be	18
12 l before	-102
12 l between	-65
12 l by	62
12 l chapter	-39
12 l circuit	-89
12 l detail	-37
12 l door	-67
12 l exit	-57
12 l flat	-62
12 l floor	-86
12 l for	22
12 l four	-15
12 l garage	89
12 l got	79
12 l had	68
12 l half	-24
12 l house	-56
12 l hung	76
12 l in	-42
12 l is	-19
12 l it	99
12 l it's	-53
12 l its	-46
12 l like	-18
12 l line	-63
12 l lot	-28
12 l need	76
12 l needs	18
12 l number	-116
12 l number's	-25
12 l of	39
12 l on	-45
12 l or	-19
12 l page	-48
12 l past	-89
12 l port	-37
12 l room	-53
12 l route	-40
12 l saves	-46
12 l set	-33
12 l sheet	-29
12 l six	34
12 l so	24
12 l the	46
12 l there's	26
12 l to	21
12 l tomorrow	44
12 l unit	-80
12 l up	57
12 l used	77
12 l want	25
12 l wants	17
12 l was	-75
12 l with	36
12 l x	45
12 l. #	15
12 l. 's	32
12 l. ,	-15
12 l. -	16
12 l. -ed	66
12 l. -ing	33
12 l. -s	46
12 l. .	-37
12 l. /	-33
12 l. 1	-15
12 l. :	61
12 l. Name	-55
12 l. letter	17
12 l. unit	-26
12 l. word	-16
12 parts	26
12 r :	-49
12 r are	19
12 r boards	26
12 r bucks	-70
12 r by	123
12 r clips	16
12 r come	-23
12 r dash	-23
12 r doors	44
12 r fifty	-55
12 r five	30
12 r for	47
12 r four	-24
12 r got	-41
12 r hangers	39
12 r i	42
12 r in	-35
12 r is	-23
12 r k	-18
12 r left	81
12 r more	21
12 r o'clock	-43
12 r of	133
12 r off	-64
12 r on	-30
12 r one	-16
12 r over	68
12 r sharp	-68
12 r six	-24
12 r so	33
12 r studs	52
12 r times	-33
12 r tomorrow	-41
12 r was	-47
12 r with	67
12 r x	27
12 r. 's	40
12 r. -s	74
12 r. 1	29
12 r. :	-49
12 r. Name	-60
12 r. letter	29
12 r. one	-60
12 r. unit	44
12 words	42
12 words round	-44
16 x _	31
2 l 
	-21
2 l +	20
2 l -	-46
2 l .	18
2 l and	-25
2 l at	-104
2 l back	74
2 l bath	-67
2 l bay	-75
2 l be	28
2 l bed	-49
2 l bedroom	-86
2 l bring	69
2 l buy	71
2 l by	-42
2 l cut	24
2 l day	-45
2 l got	-41
2 l grade	-24
2 l have	30
2 l header's	68
2 l in	-18
2 l it	-51
2 l maybe	111
2 l need	94
2 l number	-52
2 l of	-52
2 l on	51
2 l order	-22
2 l p	-21
2 l phase	-18
2 l so	66
2 l t	-45
2 l takes	-67
2 l the	100
2 l there's	-36
2 l two	40
2 l up	47
2 l used	43
2 l wants	25
2 l with	51
2 l. +	20
2 l. -	-46
2 l. .	18
2 l. /	-21
2 l. one	-36
2 l. word	18
2 parts	38
2 r 	-32
2 r )	25
2 r -	-21
2 r .	-21
2 r 20	22
2 r :	-37
2 r a	-39
2 r and	-37
2 r can	-98
2 r cents	-52
2 r clamps	24
2 r doors	78
2 r eight	-67
2 r elbows	29
2 r had	-62
2 r half	62
2 r hinges	25
2 r in	38
2 r left	60
2 r more	76
2 r no	55
2 r of	156
2 r on	-28
2 r one	-41
2 r part	-73
2 r screws	69
2 r sides	-24
2 r spare	24
2 r starts	-18
2 r the	-70
2 r times	-38
2 r two	61
2 r wrongs	-44
2 r. #	-32
2 r. )	25
2 r. -	-21
2 r. -ed	-32
2 r. .	-21
2 r. :	-37
2 r. one	71
2 r. unit	-33
2 x _	26
20 figures 2	32
20 l ,	73
20 l .	-32
20 l a	25
20 l and	40
20 l at	-54
20 l be	22
20 l by	73
20 l circuit	-16
20 l got	26
20 l of	70
20 l out	35
20 l r	-40
20 l reads	-37
20 l says	47
20 l set	58
20 l side	84
20 l so	47
20 l that's	-37
20 l the	-35
20 l to	46
20 l two	28
20 l under	53
20 l unit	-23
20 l used	21
20 l. 's	16
20 l. ,	73
20 l. -ed	-21
20 l. -ing	64
20 l. .	-32
20 l. letter	-35
20 r ,	-16
20 r -	-30
20 r .	64
20 r and	33
20 r bucks	-56
20 r by	75
20 r i	47
20 r in	-15
20 r is	49
20 r joist	34
20 r ninety	-38
20 r oc	55
20 r off	15
20 r second	-47
20 r studs	16
20 r the	-24
20 r to	123
20 r twenty	-18
20 r two	-81
20 r. ,	-16
20 r. -	-30
20 r. -s	53
20 r. .	64
20 r. one	-141
20 r. word	60
20 words round	-26
4 x _	19
5 figures 1	-18
5 l 	24
5 l 
	-23
5 l ,	97
5 l -	31
5 l .	51
5 l :	16
5 l a	-21
5 l after	-68
5 l and	34
5 l apartment	-19
5 l at	-147
5 l be	48
5 l bring	35
5 l by	-40
5 l channel	-41
5 l day	-56
5 l dock	-58
5 l flat	-65
5 l get	76
5 l got	63
5 l has	43
5 l have	91
5 l it	-26
5 l level	-61
5 l loop	-48
5 l me	59
5 l need	18
5 l needs	32
5 l not	84
5 l note	-46
5 l number	-72
5 l of	-66
5 l only	69
5 l over	98
5 l put	81
5 l room	-55
5 l shelf	-42
5 l short	111
5 l so	32
5 l switch	-51
5 l take	19
5 l ten	-34
5 l that's	24
5 l there's	-25
5 l till	-56
5 l two	-27
5 l unit	-61
5 l up	62
5 l used	52
5 l x	34
5 l zone	-44
5 l. 's	-59
5 l. ,	97
5 l. -	31
5 l. -ed	52
5 l. -s	71
5 l. .	51
5 l. /	-23
5 l. 1	29
5 l. :	16
5 l. Name	-41
5 l. letter	-32
5 l. one	-26
5 l. unit	-37
5 r 	-19
5 r )	-38
5 r -	-53
5 r 2	49
5 r a	-25
5 r and	69
5 r are	31
5 r baths	33
5 r by	-59
5 r eight	20
5 r finish	-19
5 r for	35
5 r has	-31
5 r hinges	34
5 r in	68
5 r is	-85
5 r layers	65
5 r left	88
5 r more	78
5 r new	24
5 r of	137
5 r on	30
5 r outlets	69
5 r per	62
5 r post	41
5 r shelves	25
5 r spaces	28
5 r the	-82
5 r things	-66
5 r three	19
5 r times	-89
5 r to	-94
5 r today	-54
5 r way	-76
5 r windows	47
5 r x	63
5 r. #	-17
5 r. 's	-49
5 r. )	-38
5 r. -	-53
5 r. -ed	22
5 r. -s	29
5 r. 1	31
5 r. one	-25
5 r. unit	44
5 words	16
555 - _	-32
555 _. word	-16
6 and _	-48
60 l $	-49
60 l ,	-17
60 l -	-60
60 l .	53
60 l :	21
60 l a	45
60 l about	36
60 l at	134
60 l be	-20
60 l by	92
60 l catch	-36
60 l cut	33
60 l eleven	-44
60 l for	46
60 l from	97
60 l have	26
60 l he's	-73
60 l house	67
60 l in	-80
60 l is	86
60 l it	-23
60 l it's	-48
60 l lot	-23
60 l need	35
60 l not	52
60 l number	-85
60 l point	27
60 l says	47
60 l so	54
60 l the	32
60 l to	22
60 l twelve	-47
60 l wall	37
60 l wants	75
60 l x	54
60 l. $	-49
60 l. 's	34
60 l. ,	-17
60 l. -	-60
60 l. -ed	43
60 l. -ing	65
60 l. -ly	55
60 l. -s	-37
60 l. .	53
60 l. :	21
60 l. letter	21
60 l. one	-74
60 l. unit	34
60 l. word	63
60 r 	39
60 r ,	-31
60 r -	24
60 r .	18
60 r at	17
60 r boards	33
60 r bucks	-60
60 r by	-39
60 r dollars	-87
60 r down	132
60 r fifty	-45
60 r flat	28
60 r not	39
60 r of	-44
60 r off	57
60 r on	-109
60 r or	-100
60 r seven	-33
60 r so	42
60 r that	-57
60 r they	37
60 r thick	53
60 r wide	55
60 r x	24
60 r. #	40
60 r. 's	40
60 r. ,	-31
60 r. -	24
60 r. -s	-16
60 r. .	18
60 r. /	23
60 r. Name	-31
60 r. letter	61
60 r. one	-52
60 r. word	30
60 words	22
9 _. 1	-50
99 figures 2	34
99 l 	-55
99 l $	-42
99 l an	-72
99 l and	22
99 l be	40
99 l by	21
99 l is	50
99 l it's	49
99 l of	-101
99 l return	43
99 l was	95
99 l. #	-55
99 l. $	-42
99 l. 's	65
99 l. one	-62
99 l. unit	-16
99 l. word	26
99 parts	23
99 r 	-19
99 r ,	55
99 r .	-21
99 r and	33
99 r bucks	-68
99 r by	28
99 r in	67
99 r is	-62
99 r on	69
99 r or	50
99 r so	54
99 r to	-53
99 r. #	-19
99 r. ,	55
99 r. -s	-68
99 r. .	-21
99 r. one	-20
99 r. unit	20
99 r. word	41
99 words	30
99 words round	-30
999 0figures 4	-71
999 l $	-42
999 l ,	-38
999 l .	49
999 l 555	-24
999 l a	-115
999 l about	77
999 l and	56
999 l are	18
999 l at	49
999 l by	-43
999 l extension	-33
999 l got	67
999 l is	113
999 l local	-31
999 l me	-23
999 l need	22
999 l not	31
999 l oh	-20
999 l on	-17
999 l out	85
999 l reading	29
999 l reads	59
999 l rm	-65
999 l room	-26
999 l section	-56
999 l suite	-36
999 l the	-83
999 l there	-61
999 l to	42
999 l two	42
999 l wants	25
999 l was	-47
999 l x	-37
999 l. $	-42
999 l. ,	-38
999 l. -ing	44
999 l. -s	58
999 l. .	49
999 l. 1	-51
999 l. letter	-18
999 oh	-74
999 parts	-28
999 r -	-59
999 r 555	-33
999 r :	-24
999 r a	-48
999 r across	31
999 r and	-53
999 r at	51
999 r block	-21
999 r bucks	-81
999 r centres	44
999 r deep	40
999 r for	-101
999 r high	85
999 r i	28
999 r if	-19
999 r k	-46
999 r of	83
999 r off	60
999 r on	45
999 r over	-90
999 r pickets	21
999 r so	35
999 r the	33
999 r to	-30
999 r wide	26
999 r with	40
999 r x	40
999 r. -	-59
999 r. -ing	-28
999 r. -s	-21
999 r. 1	-61
999 r. :	-24
999 r. letter	21
999 r. one	29
999 r. unit	-52
999 r. word	28
999 swallowed round	-21
999 words	86
999 words round	62
9999 figures 4	-47
9999 figures 5	-35
9999 l 	-38
9999 l $	-23
9999 l -	-33
9999 l at	142
9999 l code	-18
9999 l from	-85
9999 l in	-31
9999 l the	-67
9999 l. #	-38
9999 l. $	-23
9999 l. 's	40
9999 l. -	-33
9999 l. unit	-47
9999 l. word	-21
9999 r ,	18
9999 r and	-37
9999 r by	24
9999 r in	-24
9999 r long	44
9999 r to	74
9999 r x	-26
9999 r. ,	18
9999 r. -s	-23
9999 r. letter	-26
9999 r. unit	-24
9999 swallowed round	53
9999 words	-50
9999 words round	32
: 
 _	-19
: ._ of	15
: / _	-19
: _ -ed	24
: _ -s	46
: _ word	45
: _. -ed	24
: _. -s	46
: _. word	45
: head 0	46
: head 1	36
: head none	45
: word _	-18
@ head none	56
Name ._ .	-23
Name _ .	-23
Name _ word	-57
Name head none	-100
Name word _	-30
_ 's one	49
_ ) word	-112
_ , 's	40
_ , -ed	16
_ , -s	-21
_ , 1	-20
_ , one	51
_ , unit	27
_ - 1	-20
_ - word	-49
_ -ed ,	18
_ -ed -s	61
_ -ed .	32
_ -ed unit	60
_ -ed word	-24
_ -ing #	-34
_ -ing -s	43
_ -ing unit	20
_ -s #	134
_ -s 's	-56
_ -s ,	23
_ -s -ing	75
_ -s 1	-48
_ -s letter	68
_ -s unit	-51
_ . #	-58
_ . 's	59
_ . -ed	56
_ . -s	28
_ . 1	42
_ . letter	41
_ . one	-33
_ / 1	57
_ 1 "	37
_ 1 #	-41
_ 1 -	100
_ 1 1	-64
_ 1 unit	69
_ 1 word	40
_ : 1	-72
_ : word	-15
_ @ 1	43
_ Name Name	-17
_ letter #	-77
_ letter 1	90
_ n't word	-78
_ one #	-114
_ one one	-93
_ one unit	96
_ unit #	26
_ unit ,	48
_ unit -s	24
_ unit 1	-28
_ unit unit	-39
_ word #	36
_ word 's	-17
_ word (	-24
_ word ,	-24
_ word -	-36
_ word -ed	-36
_ word /	24
_ word 1	99
_ word :	-77
_ word Name	-67
_. 
 1	83
_. ) word	-112
_. , 's	40
_. , -ed	16
_. , -s	-21
_. , 1	-20
_. , one	51
_. , unit	27
_. - 1	-20
_. - word	-49
_. . #	-58
_. . 's	59
_. . -ed	56
_. . -s	28
_. . 1	42
_. . letter	41
_. . one	-33
_. 2 letter	35
_. 20 unit	22
_. 4 unit	-35
_. 5 unit	22
_. 555 1	-33
_. : 1	-72
_. : word	-15
_. @ 1	43
_. a .	-24
_. a word	-60
_. across word	58
_. again #	-15
_. alder Name	-17
_. along word	60
_. an unit	-87
_. and 's	23
_. and -ed	16
_. and 1	-28
_. and letter	-18
_. and one	-25
_. and unit	26
_. are -ed	27
_. are word	25
_. at one	69
_. at word	45
_. baths #	33
_. before word	30
_. behind word	33
_. below word	27
_. blank -s	34
_. block word	63
_. boards #	18
_. boards word	42
_. bracket word	39
_. brackets word	46
_. bucks #	-113
_. bucks word	-107
_. but word	46
_. by 1	37
_. by word	68
_. can word	-36
_. centres ,	19
_. cents word	-52
_. clips #	35
_. dash one	-32
_. deep ,	33
_. deep word	17
_. do word	39
_. dollars word	-106
_. doors #	19
_. doors word	59
_. down word	-18
_. eight one	36
_. eight unit	-56
_. elbows word	23
_. end word	37
_. even #	52
_. extra word	46
_. fifty one	-37
_. fifty word	-45
_. five one	-17
_. five unit	-16
_. flat word	27
_. four word	-22
_. from word	16
_. goes word	-32
_. got -ed	-30
_. half unit	24
_. hangers word	18
_. has unit	-18
_. has word	-70
_. he's word	-24
_. high ,	67
_. high word	-18
_. hinges word	58
_. hole word	-95
_. i word	39
_. if word	22
_. in 1	-28
_. in one	-64
_. in unit	-43
_. in word	32
_. is -ed	-31
_. is unit	28
_. is word	-119
_. it's one	60
_. it's word	-56
_. joist -s	35
_. k word	-55
_. kinds word	-66
_. larch Name	-29
_. last word	-38
_. layers word	65
_. left .	24
_. left unit	42
_. leg word	-51
_. long #	39
_. long word	43
_. man word	-45
_. more #	38
_. more -s	18
_. more one	19
_. more unit	44
_. new -s	18
_. new one	-22
_. new word	67
_. nine one	-26
_. ninety one	-35
_. nos .	65
_. not 1	85
_. not word	-55
_. nothing word	-74
_. o'clock word	-44
_. oc ,	32
_. oc word	28
_. of 's	-23
_. of 1	58
_. of one	-34
_. of unit	89
_. of word	-20
_. off word	73
_. oh word	28
_. old word	44
_. on Name	-23
_. on one	33
_. one one	-50
_. one word	59
_. or word	-30
_. out word	-25
_. outlets word	49
_. over word	18
_. panel word	-96
_. part word	-73
_. per word	62
_. pickets word	21
_. says word	-35
_. screws word	45
_. second #	-64
_. second word	-46
_. seven #	-18
_. seven word	-16
_. sharp #	-70
_. shelf -s	69
_. short word	59
_. should word	45
_. side word	-58
_. six one	-27
_. so letter	48
_. so one	-20
_. spaces word	28
_. spare -s	16
_. starts word	-18
_. studs word	27
_. ten unit	54
_. that -s	-50
_. that word	-18
_. the 's	-36
_. then one	-19
_. they word	19
_. things word	-67
_. three unit	17
_. tile word	34
_. times #	-43
_. times 's	-62
_. times word	-64
_. to one	-100
_. tomorrow word	-76
_. treads #	57
_. twenty one	-18
_. two one	-45
_. two unit	30
_. under word	71
_. up word	34
_. used .	41
_. wants word	-35
_. was word	-29
_. way word	-96
_. ways word	-40
_. we word	-52
_. went unit	19
_. when word	51
_. wide ,	38
_. wide word	31
_. windows #	22
_. wire -s	57
_. with one	54
_. with unit	-36
_. wrongs n't	-44
_. x 1	84
a _. #	42
a _. one	-16
a _. word	-27
a a	-17
a about	-87
a across	58
a adds	-69
a aff	60
a after	-55
a air	-29
a alder	-54
a all	-38
a along	84
a already	-20
a also	65
a am	-35
a amp	-39
a an	-41
a anchors	30
a and	30
a another	-52
a are	39
a as	-57
a ask	-39
a at	-26
a ave	-17
a baby	-41
a back	119
a bad	58
a bag	59
a ball	34
a balusters	-24
a bar	96
a bars	61
a base	24
a bases	-25
a bath	90
a bathroom	-68
a baths	51
a batts	-21
a be	30
a bearing	33
a because	38
a bedroom	-87
a before	-44
a behind	53
a below	47
a bent	-57
a between	-27
a big	43
a bit	63
a black	84
a blade	63
a blank	34
a blinds	16
a block	16
a blocks	45
a blue	-59
a board	22
a boards	114
a bolt	75
a bolts	87
a bone	-58
a book	-35
a boots	-44
a bottom	64
a bought	52
a box	95
a bracket	77
a brackets	23
a brass	131
a breakers	-40
a brick	53
a broke	-32
a broken	73
a brought	-16
a bucket	44
a bucks	-110
a buddy	-91
a building	-23
a bulbs	65
a business	-107
a but	75
a buzzer	-64
a by	26
a c	-44
a cabinet	-46
a cable	-61
a can	89
a can't	-62
a cans	63
a cap	96
a carpet	-16
a case	39
a cedar	-29
a ceiling	47
a center	107
a centers	134
a centres	54
a cents	-80
a chance	-46
a change	32
a changed	15
a check	27
a circuit	60
a clamps	78
a client	-81
a clips	118
a close	-30
a closet	42
a coat	-95
a coats	-28
a code	50
a coffee	82
a coil	62
a cold	52
a color	-23
a colour	-29
a come	-37
a comes	-46
a coming	87
a concrete	-40
a copper	-46
a cost	-42
a countertop	-21
a couplings	75
a court	-34
a cover	36
a covers	-30
a crack	-31
a cracked	83
a crown	-33
a cut	-28
a dash	-50
a day	-63
a days	-112
a dead	51
a deck	40
a decks	67
a deep	103
a degrees	-31
a dining	-29
a does	-47
a dollars	-127
a don't	-77
a done	-29
a dont	37
a door	26
a door's	79
a doors	19
a double	42
a doubled	18
a down	-20
a dozen	-115
a drawer	-27
a drawing	15
a drop	46
a drops	78
a dryer	-28
a duct	51
a dumpsters	22
a each	61
a edge	82
a eggshell	77
a eighteen	29
a eighth	16
a eighths	-33
a eights	36
a eighty	-22
a either	-86
a elbow	46
a elbows	84
a eleven	-43
a em	132
a empty	-49
a epoxy	-25
a euro	-148
a even	87
a every	45
a exit	-25
a extra	35
a face	31
a fan	18
a far	58
a faucet	-26
a fault	-34
a feet	-51
a fifteen	25
a fifteens	25
a fifty	32
a filled	-15
a filter	47
a find	-80
a finish	-43
a finished	30
a first	-21
a five	-15
a fix	-79
a fixed	32
a flapper	-59
a flat	113
a floor	16
a flowing	24
a flue	26
a foot	74
a footers	82
a for	22
a forgets	-29
a forty	16
a found	-45
a fourteen	39
a fourth	17
a framed	-49
a friday	47
a fridays	-65
a from	31
a front	-22
a ft	-26
a full	47
a g	40
a gal	20
a gallon	-58
a gang	-79
a garage	56
a gate	-24
a gate's	-47
a gave	22
a get	-20
a gets	-56
a gfci	27
a give	92
a glass	80
a glued	-58
a go	19
a goes	59
a going	46
a gonna	40
a good	65
a got	27
a grade	69
a grand	-24
a grate	-67
a green	27
a ground	-55
a grout	56
a guy	-115
a guys	-84
a hall	81
a hand	-56
a handle	-129
a hang	-45
a hangers	113
a happy	35
a has	-103
a have	47
a he	-58
a he'll	-24
a he's	-48
a head	-80
a heads	-69
a heater	-25
a heavy	20
a high	18
a him	-91
a hinge	35
a his	22
a holding	38
a hole	-102
a holes	47
a homeruns	-66
a hook	-40
a hour	-38
a house	75
a hums	-80
a hundred	29
a hung	-26
a i	-74
a i've	83
a if	-21
a in	27
a inch	31
a inches	84
a inside	-22
a instead	55
a into	52
a iron	-78
a is	-32
a ish	-52
a it	-40
a it'd	-19
a it's	-46
a joist	28
a joists	32
a just	56
a k	-72
a key	-53
a keys	-39
a kind	26
a kinds	-66
a kit	73
a kitchen	35
a knobs	38
a ladder	21
a landing	42
a larch	-29
a last	-71
a latch	31
a latest	-83
a lath	-16
a lavs	39
a layer	-127
a layers	65
a lazy	-34
a lead	25
a leaks	-69
a leaning	15
a left	44
a leg	23
a legs	40
a let	-39
a lid	68
a lift	-96
a light	73
a like	-66
a line	17
a lintel	32
a little	16
a lock	-39
a long	120
a longer	26
a look	-39
a lot	-102
a m	-22
a make	-24
a man	-40
a manholes	-15
a mate	-99
a max	73
a meter	87
a mil	21
a min	-36
a minimum	65
a missing	19
a mm	20
a monday	-50
a more	73
a morning	-126
a move	103
a moved	-99
a must	-59
a my	25
a n	56
a nails	96
a needs	-58
a new	40
a new _	-39
a newels	21
a next	-33
a night	-76
a nine	-45
a ninety	36
a no	-16
a nos	65
a nothing	-56
a now	46
a number	29
a nuts	67
a o'clock	-117
a oc	55
a of	21
a off	17
a office	-41
a oh	-29
a ok	-39
a old	47
a on	34
a once	-16
a only	38
a open	-62
a opened	24
a or	-21
a order	52
a ordered	54
a other	-35
a outlet	-17
a outlets	103
a outside	-43
a owner	37
a pan	29
a panel	-83
a panels	81
a paper	-49
a part	-73
a parts	23
a pass	-29
a past	-106
a patch	-61
a pavers	29
a people	-15
a per	74
a permit	-31
a pickets	37
a pieces	52
a piers	52
a pine	96
a pinned	18
a pins	48
a pipe	58
a place	-33
a plaster	84
a plate	66
a plugged	33
a plumb	25
a plumber	-43
a plus	25
a ply	-64
a pm	-72
a point	-29
a pole	-137
a porcelain	50
a post	77
a posts	26
a potato	-110
a pound	-33
a power	-27
a pressure	19
a primed	27
a primer	120
a pull	38
a pulls	84
a punch	-56
a quid	-81
a quiet	-27
a quit	-77
a radiator	36
a radio	-151
a ran	34
a read	-27
a ready	-69
a receps	27
a reducer	80
a remain	59
a return	34
a ring	42
a rise	60
a rod	24
a rods	37
a roller	27
a roof	-32
a room	54
a rough	47
a round	26
a run	-21
a rungs	48
a s	-36
a safe	64
a said	-91
a same	-33
a sand	39
a sash	15
a satin	63
a saturday	-15
a says	-42
a screens	24
a screwed	67
a screws	67
a sealed	73
a second	-66
a see	-38
a sent	23
a seven	-18
a seventh	-62
a seventy	75
a sharp	-79
a she	54
a she's	-45
a sheathing	24
a shed	72
a sheet	-16
a shims	38
a short	126
a should	18
a show	-35
a showed	-96
a shower	-53
a shows	-30
a shut	-36
a side	41
a sink	95
a site	-47
a six	39
a sixteen	107
a sixty	-37
a slab	69
a slope	85
a slow	-64
a smells	-16
a smoke	33
a so	24
a sockets	-27
a some	19
a somebody	-23
a somewhere	-67
a sound	-51
a spaces	28
a spans	16
a spare	17
a square	-58
a stacked	27
a stainless	61
a stair	-29
a stairs	21
a starts	-18
a stays	18
a step	-79
a stick	45
a sticks	-46
a still	-40
a stock	24
a stone	-95
a stop	30
a stops	-30
a store	42
a story	-44
a straight	-62
a strapping	59
a straps	-34
a stroke	-45
a stuck	-18
a stud	48
a studs	112
a suction	86
a sunday	-31
a supplier	-35
a supply	76
a supposed	27
a swap	-87
a sweep	54
a switch	91
a switches	33
a tag	-55
a take	52
a takes	33
a tall	60
a tap	82
a tape	114
a tees	43
a tell	-34
a ten	-19
a tens	55
a that	-28
a that's	-46
a them	-16
a them's	-23
a then	-44
a there	39
a there's	-39
a thereabouts	-25
a these	30
a they	-54
a they're	120
a thick	71
a thing	-96
a things	-85
a think	-33
a third	17
a thirteen	-25
a thirty	26
a this	-37
a those	-63
a threes	-92
a thursday	-28
a ticket	-16
a tied	-47
a tile	87
a tiles	55
a time	-33
a times	-139
a to	19
a today	-40
a together	-140
a toilet	49
a told	-36
a too	-83
a took	-20
a top	48
a total	77
a touch	-59
a traps	45
a treads	63
a treated	-44
a trim	-19
a trimmed	24
a truck	42
a tub	87
a tube	60
a tuesday	-32
a turned	-50
a twenty	55
a twice	16
a type	51
a u	35
a unit	-70
a up	19
a upstairs	-69
a us	-96
a usb	16
a use	29
a v	-37
a valve	98
a van	39
a vent	59
a vinyl	57
a wafers	28
a wall	85
a walls	-19
a wants	-17
a was	-21
a washers	47
a waste	35
a watch	-73
a water	-80
a way	-73
a ways	-71
a we're	25
a wednesday	35
a week	-66
a went	31
a were	28
a whatever	-77
a when	-18
a where	34
a which	75
a while	38
a white	25
a whole	-47
a wide	88
a windows	32
a wired	33
a with	22
a won't	-49
a wood	-25
a word	-56
a work	-52
a works	-90
a wouldn't	-114
a wrong	-28
a wrongs	-44
a x	73
a yard	-86
a yet	-72
a you	-46
a zero	-33
about _. word	30
after _. word	-41
all _. word	39
allow for _	83
an _. word	-88
and _. #	-104
and _. -ing	72
and _. -s	16
and _. 1	-35
and _. one	90
and _. unit	96
and _. word	73
and a _	41
and it's _	-81
apartment _. word	-40
are _. word	55
around _. #	-20
at _. ,	20
at _. -	50
at _. -s	53
at _. one	-38
at _. word	-26
at least _	76
at number _	-38
at the _	-25
b a	-16
b about	59
b above	55
b actually	33
b add	98
b adhesive	84
b after	-30
b air	31
b allow	94
b already	36
b alright	-47
b am	-17
b amp	112
b amps	107
b an	-56
b anchors	52
b and	26
b another	-36
b anything	60
b apart	30
b apartment	-119
b approximately	17
b are	89
b as	46
b ask	-36
b back	-26
b badge	-28
b bag	47
b bags	37
b balusters	-28
b bar	70
b basement	-52
b bases	24
b basin	47
b bath	-49
b bath's	67
b bathroom	-26
b bay	-52
b bearing	-73
b beat	-97
b because	36
b bed	-67
b bedroom	-115
b been	57
b before	-54
b behind	54
b below	-45
b bench	22
b bent	70
b beside	18
b better	74
b between	-51
b big	-39
b black	70
b blade	-44
b bldg	-30
b blinds	15
b block	-32
b blood	-100
b boards	24
b bolt	49
b bolted	36
b bolts	81
b book	20
b boss	-44
b both	-59
b bottom	-69
b bought	56
b box	-44
b bracket	26
b brackets	93
b brass	19
b breaker	-94
b breaker's	68
b breakers	75
b bring	158
b broke	83
b broken	-33
b brought	116
b bucket	-24
b building	-45
b burned	69
b bus	-42
b buy	75
b by	28
b cabinet	-37
b call	-42
b called	-46
b calls	74
b came	128
b camera	-42
b can	-16
b can't	28
b cans	56
b cap	-24
b carpet	-34
b cat	-65
b catch	-36
b cats	-97
b caulk	-24
b cause	52
b cbd	21
b ceiling	30
b cell	-91
b center	74
b centres	54
b cfm	47
b change	46
b changed	79
b channel	-97
b chapter	-39
b charged	-103
b chimney	-52
b church	22
b circuit	-86
b claim	-23
b claim's	-22
b class	-46
b cleaned	55
b clips	36
b close	-74
b closer	68
b closet	26
b coat	-35
b code	-92
b code's	-109
b cold	68
b come	-44
b confirmation	-37
b copper	52
b cost	-79
b counted	-18
b counter	-70
b courses	16
b cousin	-28
b cover	58
b crack	35
b cut	43
b dash	-38
b day	-98
b dead	19
b deck	19
b deep	73
b degrees	32
b delivery	-28
b detail	-91
b did	-65
b dining	-37
b do	-88
b dock	-58
b dog	-64
b doing	-60
b don't	-54
b done	27
b door	-83
b doors	-67
b double	56
b down	71
b downspouts	40
b dozen	-102
b drain	41
b drawer	-86
b drawing	55
b drop	26
b dropped	23
b drove	24
b dry	30
b drywall	-44
b duct	33
b dug	25
b e	-15
b each	49
b edge	51
b egress	-54
b eight	40
b eighteen	77
b eighths	100
b eighty	-61
b elbows	60
b electrician	-58
b elevator	-86
b eleven	40
b em	27
b end	50
b ends	-17
b except	65
b exit	-97
b extension	-21
b exterior	-66
b falls	-60
b fault	-45
b feet	50
b fence	27
b fifteen	51
b fifty	29
b figure	76
b figured	-17
b fine	-49
b finish	-24
b finished	43
b fire	18
b first	-26
b fix	-42
b flashing	57
b flat	-32
b flight	-44
b floor	-30
b flue	77
b foot	22
b footers	50
b footing	44
b footing's	62
b found	86
b fourteen	41
b friday	-19
b fridge	55
b from	-48
b front	-79
b ft	23
b full	77
b gallon	62
b gang	28
b gap	106
b garage	78
b gate	-79
b gauged	93
b generator	117
b get	75
b gets	20
b give	-43
b glass	24
b glue	106
b glued	42
b go	18
b gone	57
b good	19
b got	73
b gotta	32
b grab	86
b grade	37
b grid	-20
b guy	-37
b had	71
b half	38
b hangers	69
b hardware	-26
b has	47
b hatch	-70
b have	90
b he	-85
b he'll	-65
b he's	-155
b head	96
b header	31
b header's	100
b heat	-28
b heater	15
b her	-53
b here	-73
b high	-34
b him	-94
b hinge	21
b hinges	-80
b his	-142
b holding	44
b holes	24
b home	-21
b homeruns	-32
b hood	45
b hot	-55
b hour	-94
b house	-28
b how	37
b humidity	67
b hundred	43
b hung	79
b i'd	16
b i'll	40
b i'm	57
b i've	70
b if	37
b inch	70
b inches	20
b inside	71
b inspector	-91
b install	-25
b insulation	-37
b into	70
b invoice	-87
b island	83
b it	24
b item	-52
b itself	-55
b joint	-17
b joist	19
b joists	52
b just	169
b k	-74
b key	-76
b kit	43
b kitchen	33
b knobs	39
b l	79
b l1	28
b lady	-48
b laid	39
b last	58
b lb	47
b leafs	-32
b least	76
b leaves	88
b led	81
b left	43
b leg	69
b lengths	71
b level	-92
b lid	45
b light	-30
b lights	44
b like	24
b line	37
b linen	27
b lining's	39
b lintel	29
b list	-21
b listen	-21
b little	-72
b living	-59
b load	76
b local	-31
b lockbox	-59
b loop	-46
b loose	58
b lost	-20
b lot	-120
b lounge	74
b lumber	-59
b lunch	-29
b m	-42
b make	55
b mark	-74
b mat	-29
b mate	-55
b max	63
b maybe	97
b measure	-103
b medium	60
b mesh	-25
b meter	67
b metre	40
b metres	75
b middle	-30
b mil	-17
b mile	-15
b miles	-21
b millimeter	18
b million	-69
b minus	-39
b minute	-41
b mirror	71
b mirror's	38
b missing	53
b mix	26
b mm	38
b model	-19
b moisture	33
b moon	-95
b more	42
b mortar	43
b mounted	60
b mrs	-44
b mud	-28
b must	49
b my	-45
b nah	-20
b nail	39
b nailed	87
b near	-70
b need	101
b needs	58
b new	-21
b next	-113
b nice	-37
b niche	-50
b nine	-22
b nineteen	-78
b no	71
b nobody	-100
b none	53
b note	-46
b nothing	68
b now	95
b number	-177
b number's	-92
b of	52
b off	39
b office	-29
b oh	-28
b ohm	34
b ohms	58
b oil	-63
b ok	-23
b okay	-78
b old	-68
b one	-23
b only	83
b open	-80
b opening	57
b opening's	34
b option	-71
b ordered	87
b other	-16
b out	15
b outlet	-35
b outlets	18
b outside	65
b oven	51
b over	45
b owes	-58
b owner	-40
b p	-52
b packed	51
b pad	-27
b page	-108
b paid	-96
b paint's	-58
b painted	-51
b pan	-15
b panel	22
b panels	38
b pantry	-18
b paper	-89
b part	-24
b patch	63
b pay	-119
b pcs	-60
b percent	39
b permit	-62
b pete	-62
b phase	-55
b phone	-15
b pick	119
b picked	-38
b pier	-61
b pinned	38
b pipe	81
b pitch	-40
b place	-34
b plan	-54
b plaster	80
b plastic	-47
b plate	-20
b plates	38
b please	101
b plot	-42
b plug	40
b ply	41
b po	-76
b point	54
b pole	-88
b policy	-34
b poly	-61
b porch	37
b port	-28
b post	43
b pressure	-59
b pressure's	98
b primer	-19
b psi	72
b pu	61
b pulled	-82
b pulling	61
b pulls	17
b pump	-44
b put	112
b quarter	-34
b r	-91
b rack	-86
b range	36
b rapid	-51
b rated	64
b re	-54
b read	76
b reading	84
b reads	77
b real	31
b ref	-50
b rental	-75
b replaced	33
b return	110
b rev	-42
b reveal's	108
b rfi	-31
b rh	91
b right	-22
b ring	-16
b rise	144
b riser	-90
b rm	-93
b road	-66
b rock	34
b rod	25
b roll	28
b roller	26
b rolls	-69
b roof	-51
b rooftop	-23
b room	-90
b roughed	63
b round	-35
b route	-47
b row	-105
b rtu	-84
b run	-28
b s	37
b same	-68
b sand	-80
b sanded	-42
b saturday	-78
b saves	-46
b saw	-64
b say	21
b says	49
b scale	-21
b sch	-72
b screen	27
b screw	27
b screwed	61
b screws	17
b sealer	42
b seat	45
b second	23
b section	-59
b send	-87
b sent	86
b serial	-45
b set	148
b seventy	54
b she	-26
b she'll	-57
b she's	-89
b shear	52
b sheet	-59
b shelf	55
b shellac	31
b shelves	53
b shim	-60
b shop	-21
b short	158
b shorted	116
b should	54
b should've	73
b shower	-81
b side	46
b silicone	18
b sill	102
b since	-60
b sink	37
b site	-99
b sits	17
b six	46
b sixteen	35
b sixteenth	-16
b sixty	124
b slab	56
b smoko	-48
b snapped	-30
b so	37
b soft	22
b somebody	82
b sorry	50
b spacing	101
b spec	74
b square	24
b stair	-68
b stairs	-39
b start	-92
b stat	42
b static	41
b static's	56
b steps	43
b still	28
b stitch	-46
b stock	33
b stone	63
b strike	41
b strip	-24
b stud	53
b studs	76
b stuff	91
b submittal	-61
b suite	-55
b superheat	121
b supply	49
b supposed	-53
b swap	-28
b swapped	53
b tag	-80
b takes	-73
b tank	-32
b tell	21
b temp	88
b ten	-68
b tenant	-54
b than	71
b that's	-30
b their	-68
b them	29
b then	-45
b there's	37
b thermostat	71
b they	23
b they're	-98
b thing	-27
b think	-37
b third	40
b thirteen	126
b thirty	-18
b this	-86
b those	-16
b though	66
b three	45
b threshold	-43
b thursday	-77
b ticket	-90
b tied	31
b tight	52
b til	-58
b tile	35
b tiles	46
b till	-17
b time	-37
b times	-63
b tip	-45
b to	29
b toast	71
b today	-35
b toilet	77
b tomorrow	-30
b took	63
b top	-24
b total	76
b tower	31
b trailer	-79
b trap	53
b tray	38
b tread	-45
b treads	42
b truck	69
b tube	69
b tubes	28
b tuesday	-22
b turn	-19
b turned	-99
b twelve	108
b twenty	46
b twice	85
b two	33
b txt	-27
b type	-111
b u	-85
b under	75
b unit	-74
b up	30
b uppers	55
b upstairs	42
b use	17
b used	135
b v	-26
b valve	119
b van	108
b vanity	87
b vent	40
b volts	46
b w	58
b wait	59
b walk	-33
b wall	73
b wall's	82
b walls	-34
b want	78
b wanted	86
b wants	74
b wardrobe	-68
b was	-31
b water	-23
b way	-63
b we	20
b we've	22
b wednesday	-75
b week	-69
b went	85
b were	-29
b when	61
b where	21
b which	19
b white	64
b whole	-25
b wide	68
b width	89
b window	-78
b windows	70
b wire	15
b with	65
b won't	54
b wood	-68
b works	-29
b worktop's	27
b x	34
b yard	-75
b you	-17
b your	-108
b zero	-82
b zone	-77
back _. word	22
back at _	-49
back with _	86
bare 1	-62
bare 2	72
bare 3	18
bath _. word	-80
bay _. word	-110
be _. #	51
be _. ,	47
be _. word	34
be over _	98
be there _	-82
bedroom _. word	-68
between _. word	-65
bottom _. word	-33
bought _. word	70
breaker's a _	68
bring _. 1	20
bring _. word	48
bring me _	25
but _. word	68
buy _. word	89
by _. #	33
by _. 's	23
by _. ,	-33
by _. -ed	60
by _. .	-84
by _. unit	-46
by _. word	37
call it _	82
calls for _	70
catch _. word	-36
cell is _	-16
change order _	-75
channel _. word	-41
chapter _. word	-39
circuit _. word	-71
claims 2	-53
class of _	-45
coat _. word	-86
code _. word	-30
code is _	-34
cut _. -s	54
cut _. word	42
cut me _	79
dash _. #	-27
day _. .	-41
day _. word	-72
detail _. word	-37
door _. word	-59
door is _	26
down from _	-28
down to _	38
eight by _	23
em at _	18
every _. word	-55
except the _	-42
exit _. #	-68
exit _. word	-48
extension _. #	-33
exterior _. #	-63
feet of _	-36
fifty - _	-26
figures 1 # -s	67
figures 1 # .	-111
figures 1 # word	40
figures 1 ( word	48
figures 1 + word	33
figures 1 , -s	75
figures 1 , 1	28
figures 1 - #	-31
figures 1 -ed word	72
figures 1 -s -s	32
figures 1 -s .	53
figures 1 . )	-54
figures 1 . word	25
figures 1 / .	-78
figures 1 1 1	-71
figures 1 : -ed	23
figures 1 : -s	34
figures 1 : word	52
figures 1 l. #	26
figures 1 l. +	39
figures 1 l. ,	68
figures 1 l. -ed	45
figures 1 l. -ing	22
figures 1 l. -s	47
figures 1 l. .	-20
figures 1 l. /	-59
figures 1 l. 1	-26
figures 1 l. :	61
figures 1 l. Name	-73
figures 1 l. letter	66
figures 1 letter word	21
figures 1 r. #	-36
figures 1 r. )	-58
figures 1 r. -	-34
figures 1 r. -ed	45
figures 1 r. -s	89
figures 1 r. :	-67
figures 1 r. word	23
figures 1 unit .	-31
figures 1 unit letter	31
figures 1 word #	-27
figures 1 word )	33
figures 1 word ,	-21
figures 1 word -ing	-22
figures 1 word -s	44
figures 1 word .	53
figures 1 word /	40
figures 1 word 1	26
figures 1 word :	-32
figures 1 word letter	-57
figures 1 word unit	-21
figures 2 # -s	66
figures 2 # letter	15
figures 2 # word	-34
figures 2 $ .	-22
figures 2 , -s	53
figures 2 , word	21
figures 2 -ed word	47
figures 2 -s ,	34
figures 2 -s word	32
figures 2 . -s	-19
figures 2 : word	31
figures 2 l. #	19
figures 2 l. $	-60
figures 2 l. ,	-21
figures 2 l. -ed	52
figures 2 l. -ing	43
figures 2 l. -ly	55
figures 2 l. -s	72
figures 2 l. .	-27
figures 2 l. /	-59
figures 2 l. :	69
figures 2 l. Name	-49
figures 2 l. letter	91
figures 2 l. one	-26
figures 2 l. unit	22
figures 2 letter #	49
figures 2 letter word	37
figures 2 one -	-26
figures 2 r. #	-22
figures 2 r. ,	17
figures 2 r. -s	18
figures 2 r. .	38
figures 2 r. :	-37
figures 2 r. letter	41
figures 2 r. unit	42
figures 2 unit #	30
figures 2 unit word	51
figures 2 word #	-58
figures 2 word ,	40
figures 2 word -	15
figures 2 word .	52
figures 2 word letter	20
figures 2 word unit	40
figures 2 word word	-42
figures 3 , word	73
figures 3 1 1	-30
figures 3 l. $	-42
figures 3 l. ,	68
figures 3 l. -	20
figures 3 l. -s	37
figures 3 l. 1	-35
figures 3 l. unit	82
figures 3 letter ,	25
figures 3 r. ,	41
figures 3 r. -	-59
figures 3 r. -s	46
figures 3 r. 1	-42
figures 3 r. :	-24
figures 3 r. letter	40
figures 3 r. word	-21
figures 3 word ,	26
figures 3 word -	-46
figures 3 word .	-17
figures 3 word 1	-17
figures 3 word :	-24
figures 3 word letter	25
figures 4 's word	35
figures 4 l. 's	35
figures 4 l. -	-33
figures 4 l. unit	-31
figures 4 l. word	-39
figures 4 r. #	-42
figures 4 r. letter	-26
figures 4 r. unit	-24
figures 4 word #	-56
figures 4 word ,	29
figures 4 word letter	-27
figures 5 l. word	-61
figures 5 r. #	-19
figures 5 r. word	-42
figures 5 word word	-34
first _. word	-47
five _. #	-28
five by _	-21
flat _. word	26
floor and _	32
foot by _	46
for _. #	96
for _. -s	-37
for _. word	-66
for the _	31
form 0figures 4	-71
form figures 2	29
form figures 4	-47
form figures 5	-70
form oh	-74
form parts	56
forty by _	63
four to _	-63
from _. one	-17
from _. word	18
ft , _	18
gate code's _	-45
get _. #	15
get _. .	89
get _. word	113
go _. #	55
gonna be _	-61
got _. #	71
got _. -s	-82
got _. unit	57
got _. word	80
got the _	15
grab _. word	59
had _. word	46
half _. word	-29
half past _	-86
has _. -s	40
has _. word	77
have _. -s	17
he's _. word	-82
head 0	26
head 1	64
head 2	21
head 3	61
head at _	38
head none	-19
header's _. one	68
header's two _	32
house _. word	-84
house is _	-23
humidity was _	31
hundred by _	47
hung _. word	37
i counted _	81
i have _	43
i put _	37
i want _	19
i'm at _	77
i'm reading _	26
i'm short _	15
i've got _	41
in , _	-37
in _. #	-60
in _. ,	-64
in _. -s	-43
in _. word	-26
in and _	44
in at _	100
in bed _	-72
in rm _	-62
in the _	-44
inch and _	-28
instead of _	42
is _. #	-26
is _. ,	36
is _. -	17
is _. .	19
is _. 1	-17
is _. one	-88
is _. unit	-37
is _. word	154
is a _	54
it _. #	104
it _. -s	-63
it _. word	53
it at _	22
it needs _	33
it to _	90
it was _	-59
it's _. #	35
it's _. unit	-59
it's _. word	-25
it's a _	-56
it's lot _	-15
its _. word	-46
just _. #	143
l1 	21
l1 
	-68
l1 $	-106
l1 +	75
l1 ,	27
l1 -	-37
l1 .	16
l1 4	29
l1 555	-24
l1 9	-50
l1 :	76
l1 @	60
l1 about	42
l1 add	59
l1 after	-91
l1 all	88
l1 an	-88
l1 and	98
l1 another	-23
l1 apartment	-95
l1 are	89
l1 at	18
l1 bath	-124
l1 bay	-118
l1 be	78
l1 bed	-105
l1 bedroom	-99
l1 before	-102
l1 between	-65
l1 big	-28
l1 bottom	-47
l1 bought	97
l1 breaker	-64
l1 bring	129
l1 building	-64
l1 bus	-42
l1 but	-18
l1 buy	129
l1 cat	-72
l1 catch	-36
l1 channel	-59
l1 chapter	-39
l1 circuit	-98
l1 coat	-86
l1 code	-88
l1 code's	-82
l1 counted	87
l1 cut	106
l1 dash	-29
l1 day	-102
l1 deep	-15
l1 detail	-37
l1 do	-25
l1 dock	-58
l1 door	-84
l1 down	103
l1 eight	-18
l1 eleven	-51
l1 every	-42
l1 exit	-103
l1 extension	-35
l1 exterior	-63
l1 first	-47
l1 five	-35
l1 flat	-16
l1 floor	-89
l1 for	-16
l1 found	105
l1 four	-25
l1 fourteen	-72
l1 from	-22
l1 full	78
l1 garage	86
l1 get	157
l1 go	55
l1 good	-32
l1 got	105
l1 grab	86
l1 grade	-29
l1 had	131
l1 half	-36
l1 has	95
l1 have	84
l1 he's	-92
l1 header's	68
l1 him	-46
l1 house	-38
l1 hung	58
l1 in	-75
l1 invoice	-75
l1 is	42
l1 it	45
l1 it's	-38
l1 its	20
l1 job	-30
l1 just	160
l1 least	76
l1 leaves	79
l1 left	58
l1 leg	-67
l1 level	-82
l1 like	23
l1 line	-63
l1 local	-31
l1 long	-24
l1 loop	-48
l1 lot	-87
l1 mate	-51
l1 maybe	151
l1 me	29
l1 missing	-34
l1 need	109
l1 needs	71
l1 new	-73
l1 nineteen	-67
l1 no	18
l1 not	46
l1 note	-46
l1 now	109
l1 number	-206
l1 number's	-76
l1 of	-22
l1 oh	-31
l1 old	-90
l1 on	-34
l1 one	-60
l1 only	82
l1 opening	33
l1 or	-43
l1 order	-21
l1 ordered	45
l1 out	88
l1 over	27
l1 p	-30
l1 page	-56
l1 past	23
l1 phase	-18
l1 plot	-42
l1 point	27
l1 port	-37
l1 pulling	64
l1 put	88
l1 r	-72
l1 rack	-41
l1 rated	56
l1 read	84
l1 reading	53
l1 reads	33
l1 replaced	73
l1 return	43
l1 rfi	-31
l1 right	-70
l1 riser	-78
l1 rm	-117
l1 room	-100
l1 route	-40
l1 said	86
l1 saves	-46
l1 say	50
l1 says	72
l1 second	-34
l1 section	-59
l1 sent	53
l1 set	93
l1 sheet	-56
l1 shelf	-42
l1 short	151
l1 since	-57
l1 slab	17
l1 so	128
l1 spacing	45
l1 square	-61
l1 static's	49
l1 step	-79
l1 suite	-55
l1 supply	20
l1 switch	-68
l1 t	25
l1 take	23
l1 takes	-77
l1 temp	43
l1 ten	-52
l1 that	-129
l1 the	-63
l1 then	24
l1 there	-31
l1 thing	-50
l1 third	-25
l1 this	-39
l1 three	-19
l1 through	39
l1 till	-110
l1 to	70
l1 tomorrow	64
l1 took	73
l1 tread	-37
l1 truck	-49
l1 turned	-70
l1 twelve	-49
l1 two	40
l1 type	-96
l1 under	85
l1 unit	-134
l1 up	77
l1 us	25
l1 used	117
l1 wall	89
l1 want	75
l1 wants	129
l1 was	51
l1 were	-84
l1 which	-16
l1 with	43
l1 x	58
l1 you	-28
l1 zone	-79
l1. $	-106
l1. 's	50
l1. +	75
l1. ,	27
l1. -	-37
l1. -ed	40
l1. -ing	38
l1. -ly	86
l1. -s	42
l1. .	16
l1. /	-62
l1. :	76
l1. @	60
l1. Name	-100
l1. letter	-22
l1. one	-58
l1. unit	-40
l2 	-21
l2 
	32
l2 "	32
l2 (	55
l2 -	26
l2 1	-69
l2 10	33
l2 14	44
l2 16	31
l2 18	24
l2 2	-67
l2 24	-40
l2 3	-19
l2 30	-21
l2 36	16
l2 4	33
l2 5	-21
l2 55	42
l2 555	-32
l2 6	-63
l2 60	40
l2 68	60
l2 9	76
l2 a	-182
l2 allow	83
l2 an	-75
l2 and	-23
l2 are	33
l2 at	-90
l2 back	20
l2 badge	-18
l2 bar	40
l2 be	66
l2 been	-16
l2 book	15
l2 bottom	31
l2 box	71
l2 boxes	66
l2 breaker's	68
l2 by	-102
l2 call	42
l2 calls	70
l2 came	16
l2 cap	18
l2 cell	-16
l2 changed	29
l2 charged	-103
l2 class	-45
l2 clips	-16
l2 closer	73
l2 closet	-40
l2 code	-21
l2 cracked	66
l2 cut	100
l2 deep	59
l2 don't	-123
l2 done	60
l2 door	-52
l2 down	28
l2 dryer	-27
l2 each	45
l2 eight	40
l2 em	39
l2 end	30
l2 except	-42
l2 feet	-35
l2 fifteen	22
l2 fifty	-25
l2 first	74
l2 five	-23
l2 floor	42
l2 foot	72
l2 for	-80
l2 forty	-92
l2 four	69
l2 fourteen	28
l2 friday	-60
l2 fridge	29
l2 from	-114
l2 front	-76
l2 ft	55
l2 gate	-45
l2 get	-65
l2 give	-35
l2 go	-23
l2 gone	25
l2 good	68
l2 got	35
l2 gotta	67
l2 grab	-17
l2 half	-58
l2 hand	31
l2 hardware	-83
l2 have	58
l2 he	-47
l2 he's	-30
l2 head	119
l2 header's	32
l2 here	-92
l2 high	-52
l2 him	-15
l2 hole	45
l2 house	-23
l2 humidity	44
l2 hung	48
l2 i	107
l2 i'd	23
l2 i'll	45
l2 i'm	109
l2 i've	46
l2 in	-55
l2 inch	58
l2 inches	72
l2 inside	45
l2 instead	42
l2 is	37
l2 it	36
l2 it's	-15
l2 job	23
l2 joists	38
l2 kitchen	-15
l2 left	19
l2 leg	102
l2 lengths	70
l2 level	-53
l2 lintel	28
l2 long	24
l2 loose	73
l2 main	47
l2 make	110
l2 max	31
l2 mil	-78
l2 missing	92
l2 mm	79
l2 more	66
l2 need	53
l2 nine	-44
l2 no	-95
l2 not	-87
l2 now	22
l2 number	-68
l2 of	-107
l2 off	-59
l2 oh	-40
l2 on	-34
l2 one	-45
l2 only	80
l2 opening	24
l2 or	18
l2 out	-29
l2 outlets	18
l2 owes	-58
l2 paid	-90
l2 paint	34
l2 permit	-48
l2 pick	76
l2 pipe	78
l2 plate	-59
l2 please	50
l2 put	93
l2 quarter	-56
l2 r	-69
l2 real	59
l2 red	-108
l2 room	-35
l2 rtu	-68
l2 say	-25
l2 screws	20
l2 set	32
l2 she	-25
l2 she's	-58
l2 sheets	-62
l2 shop	-35
l2 short	62
l2 should	54
l2 sill	58
l2 sixteen	40
l2 sixty	47
l2 spec	28
l2 sticks	48
l2 still	-16
l2 studs	29
l2 tell	39
l2 ten	20
l2 that	-18
l2 that's	-64
l2 the	-95
l2 then	-18
l2 there's	76
l2 this	-70
l2 three	87
l2 thursday	-109
l2 ticket	-38
l2 tile	58
l2 time	-46
l2 to	-45
l2 tomorrow	-77
l2 twelve	57
l2 twenty	64
l2 two	-81
l2 type	-83
l2 under	24
l2 unit	-36
l2 up	23
l2 wall	55
l2 wants	-47
l2 was	-126
l2 we	87
l2 we're	-19
l2 went	77
l2 were	86
l2 which	47
l2 white	41
l2 window	-59
l2 windows	64
l2 with	33
l2 you	24
l2 zero	-91
l2. "	32
l2. #	-21
l2. 's	20
l2. (	55
l2. -	26
l2. -ed	29
l2. -ing	42
l2. -ly	-41
l2. /	78
l2. 1	17
l2. Name	-20
l2. letter	58
l2. n't	-73
l2. one	-26
l3 	-40
l3 
	-19
l3 "	-18
l3 )	-21
l3 ,	30
l3 -	-32
l3 .	24
l3 1	26
l3 10	-67
l3 14	48
l3 20	29
l3 22	-23
l3 4	20
l3 6	18
l3 8	45
l3 :	30
l3 ;	26
l3 a	103
l3 about	-38
l3 all	-55
l3 already	27
l3 amps	56
l3 an	76
l3 are	45
l3 at	-69
l3 bag	25
l3 bags	-30
l3 base	19
l3 bay	93
l3 be	-50
l3 between	-86
l3 board	-34
l3 boards	20
l3 boxes	-60
l3 but	-60
l3 buy	-35
l3 by	61
l3 c	-22
l3 call	-87
l3 came	109
l3 can't	32
l3 channel	-73
l3 circuit	60
l3 comes	-38
l3 cousin	-25
l3 dead	-24
l3 deep	-19
l3 did	-30
l3 door	20
l3 down	18
l3 drop	38
l3 each	76
l3 eight	80
l3 em	31
l3 ends	-18
l3 feet	-17
l3 five	-16
l3 flat	-29
l3 floor	15
l3 foot	26
l3 for	17
l3 forty	-29
l3 fourteen	53
l3 from	22
l3 front	-69
l3 ft	39
l3 get	-39
l3 glass	-16
l3 glued	33
l3 go	35
l3 got	55
l3 had	-40
l3 half	45
l3 hangers	26
l3 have	-49
l3 he	-51
l3 he's	-65
l3 her	-35
l3 him	-71
l3 his	-62
l3 hole	56
l3 hot	-22
l3 house	56
l3 hung	38
l3 i	19
l3 i'd	57
l3 i'm	48
l3 i've	36
l3 in	-18
l3 inch	95
l3 inches	-60
l3 is	-76
l3 it	-57
l3 it's	-36
l3 its	-54
l3 lady	-27
l3 left	-24
l3 like	51
l3 lot	-21
l3 me	30
l3 metres	42
l3 mil	-16
l3 mix	36
l3 mm	-21
l3 more	105
l3 my	-31
l3 nailed	41
l3 need	-58
l3 needs	42
l3 next	-75
l3 nine	64
l3 ninety	-54
l3 no	71
l3 now	-29
l3 off	-41
l3 oh	53
l3 ok	-21
l3 old	98
l3 one	-25
l3 ones	-50
l3 only	-42
l3 opening	17
l3 order	-22
l3 out	-45
l3 over	41
l3 panel	-15
l3 permit	-16
l3 put	-99
l3 quarter	56
l3 r	30
l3 rack	-61
l3 rental	-47
l3 ring	24
l3 run	54
l3 says	44
l3 second	50
l3 see	-54
l3 seven	-25
l3 seventy	70
l3 she	-44
l3 side	78
l3 sixty	-20
l3 slab	-29
l3 somebody	61
l3 spacing	56
l3 start	-41
l3 temp	46
l3 ten	-116
l3 th	-40
l3 that	17
l3 the	46
l3 their	-67
l3 them	67
l3 there	34
l3 they're	-56
l3 third	33
l3 thirteen	86
l3 thirty	36
l3 tile	47
l3 till	24
l3 times	-26
l3 to	25
l3 tomorrow	65
l3 too	51
l3 truck	58
l3 twelve	79
l3 twenty	-25
l3 two	-27
l3 u	-32
l3 under	39
l3 unit	44
l3 up	-90
l3 wall	-24
l3 want	24
l3 was	32
l3 we	53
l3 we're	44
l3 white	105
l3 x	85
l3 you	-78
l3. "	-18
l3. #	-41
l3. 's	-35
l3. )	-21
l3. ,	30
l3. -	-32
l3. -ing	27
l3. -ly	-33
l3. .	24
l3. 1	53
l3. :	30
l3. ;	26
l3. Name	62
l3. letter	48
l3. n't	51
last _. word	17
left _. word	77
lengths of _	67
letter - _	-49
letter -ed _	58
letter ._ 	26
letter ._ ,	44
letter ._ .	54
letter ._ and	-16
letter ._ in	-44
letter ._ x	23
letter _ #	26
letter _ ,	44
letter _ -s	-29
letter _ .	54
letter _ letter	31
letter _ unit	-37
letter _ word	-62
letter head 0	-29
letter word _	55
level _. word	-33
long _. word	-23
loop _. word	-48
lot _. word	-66
main and _	47
make it _	93
make that _	30
maybe _. #	113
maybe _. word	77
me _. -s	-41
me _. word	76
me at _	-30
missing _. word	-41
mm , _	23
more figures 5	-49
more l. word	-45
more r. word	-17
n't word _	-73
need _. #	35
need _. -s	32
need _. .	56
need _. 1	64
need _. one	60
need _. word	25
needs _. -s	35
needs _. word	28
new _. ,	-23
new _. unit	-50
new _. word	-65
ninety by _	18
no , _	87
no . _	-149
no _. #	64
no _. -s	-18
not _. word	45
note _. word	-46
number _. #	-19
number _. unit	-45
number _. word	-151
number is _	-65
of _. #	48
of _. 's	-26
of _. -s	35
of _. letter	-69
of _. word	-25
off at _	-62
oh _. #	-24
oh l. unit	-40
oh r. #	-70
oh r. word	-33
oh unit word	-37
oh word #	-46
oh word word	26
old _. word	-65
on , _	41
on . _	58
on _. -s	54
on a _	102
on all _	61
on circuit _	-26
on level _	-36
on the _	-41
one , _	-65
one - _	-26
one -s _	73
one ._ 	-50
one ._ -	-26
one ._ by	85
one ._ dash	-15
one ._ five	-18
one ._ four	-16
one ._ of	60
one ._ on	-36
one ._ one	-29
one ._ three	-16
one _ #	-50
one _ -	-26
one _ one	-62
one _. #	-44
one _. one	-17
one and _	-22
one at _	-42
one by _	45
one head none	-64
one one _	-47
one two _	-37
one unit _	96
one word _	-35
only _. #	114
only _. word	-40
open at _	-58
opening is _	24
or _. #	-66
order _. #	-53
order _. -s	-55
order _. .	50
order _. word	79
ordered _. word	43
out at _	-46
out of _	-28
page _. word	-34
parts # word	54
parts 's word	19
parts -ing word	17
parts l. #	44
parts l. 's	34
parts l. ,	34
parts l. -ing	23
parts l. -s	-37
parts l. letter	-20
parts l. unit	30
parts l. word	77
parts r. ,	-44
parts r. -s	-72
parts r. .	66
parts r. letter	-40
parts r. unit	71
parts r. word	115
parts word .	47
parts word unit	36
parts word word	92
past _. #	-48
past _. word	51
phase _. -s	-18
pick up _	76
pipe is _	16
plot _. word	-42
put _. -s	41
put _. unit	61
put _. word	36
put in _	110
quarter and _	70
quarter past _	-22
r - _	-44
r _. word	-34
r1 
	16
r1 )	-37
r1 -	-59
r1 1	27
r1 10	23
r1 12	57
r1 2	76
r1 20	22
r1 3	-68
r1 4	47
r1 5	25
r1 555	-33
r1 9	-17
r1 :	-98
r1 @	32
r1 a	-60
r1 about	-20
r1 above	48
r1 across	62
r1 adds	-69
r1 aff	52
r1 after	-31
r1 again	-15
r1 alder	-17
r1 all	-27
r1 along	60
r1 already	24
r1 an	-87
r1 are	43
r1 at	39
r1 baths	33
r1 batts	-21
r1 behind	33
r1 below	27
r1 blank	34
r1 block	21
r1 blocks	39
r1 boards	57
r1 bolts	39
r1 bottom	47
r1 bracket	41
r1 brackets	54
r1 brick	53
r1 broken	72
r1 bucks	-186
r1 but	43
r1 by	44
r1 can	-36
r1 centers	48
r1 centres	53
r1 cents	-80
r1 chance	-38
r1 clamps	26
r1 clips	41
r1 come	-45
r1 corner	57
r1 dash	-32
r1 dead	37
r1 deep	81
r1 do	39
r1 dollars	-127
r1 door	-19
r1 doors	113
r1 double	60
r1 down	34
r1 drops	70
r1 eight	-33
r1 elbows	50
r1 end	-33
r1 euro	-149
r1 even	70
r1 extra	64
r1 fifty	-26
r1 finish	-19
r1 five	-36
r1 flat	65
r1 forty	18
r1 four	-34
r1 fourteen	-52
r1 gets	-67
r1 go	-99
r1 goes	-50
r1 going	18
r1 got	-32
r1 had	-68
r1 half	25
r1 hand	-77
r1 hangers	44
r1 has	-91
r1 he	-19
r1 he's	-25
r1 here	40
r1 high	46
r1 hinge	33
r1 hinges	72
r1 hole	-128
r1 hung	49
r1 i	56
r1 i'm	-25
r1 in	16
r1 is	-96
r1 ish	-52
r1 it	-36
r1 joist	35
r1 k	-80
r1 kinds	-66
r1 knobs	36
r1 larch	-29
r1 last	-63
r1 layer	-127
r1 layers	65
r1 left	50
r1 leg	-21
r1 long	104
r1 loose	29
r1 man	-45
r1 max	28
r1 more	94
r1 needs	-67
r1 new	65
r1 nine	36
r1 ninety	-41
r1 no	31
r1 nos	65
r1 not	17
r1 nothing	-74
r1 now	22
r1 number	56
r1 o'clock	-128
r1 oc	55
r1 off	75
r1 old	46
r1 one	15
r1 or	-65
r1 outlets	90
r1 panel	-138
r1 panels	34
r1 part	-73
r1 per	75
r1 pickets	47
r1 piers	51
r1 plate	47
r1 please	32
r1 post	41
r1 posts	34
r1 potato	-81
r1 pulls	61
r1 quid	-82
r1 s	30
r1 says	-58
r1 screw	26
r1 screws	71
r1 second	-105
r1 sharp	-79
r1 she	-21
r1 sheets	17
r1 shelf	-57
r1 shelves	31
r1 short	41
r1 should	45
r1 sides	-24
r1 sixty	-17
r1 so	39
r1 spaces	28
r1 spare	55
r1 starts	-18
r1 still	29
r1 straps	68
r1 stroke	-38
r1 studs	65
r1 ten	49
r1 that	-72
r1 the	-37
r1 there's	-15
r1 thick	53
r1 thing	-45
r1 things	-81
r1 thirty	50
r1 this	-55
r1 three	-22
r1 tile	102
r1 tiles	41
r1 times	-139
r1 to	-32
r1 tomorrow	-74
r1 treads	113
r1 twenty	47
r1 two	-15
r1 under	71
r1 up	18
r1 used	45
r1 wall	16
r1 wants	-55
r1 was	-92
r1 wax	41
r1 way	-96
r1 ways	-71
r1 we	-30
r1 when	39
r1 white	57
r1 wide	83
r1 windows	66
r1 wire	25
r1 wood	-34
r1 wrongs	-44
r1 x	39
r1. 's	25
r1. )	-37
r1. -	-59
r1. -ing	41
r1. -s	26
r1. 1	30
r1. :	-98
r1. @	32
r1. Name	-45
r1. n't	-82
r1. one	-52
r1. unit	16
r1. word	20
r2 
	41
r2 "	37
r2 (	-43
r2 +	17
r2 .	19
r2 /	-51
r2 0142	-41
r2 1	19
r2 100	74
r2 12	116
r2 15	41
r2 2	-58
r2 20	-70
r2 30	-24
r2 35	51
r2 5	-27
r2 6	51
r2 7	-62
r2 8	31
r2 :	-79
r2 a	-59
r2 about	-52
r2 amp	18
r2 and	19
r2 are	62
r2 ask	73
r2 at	-48
r2 ave	-17
r2 b	-40
r2 back	-67
r2 bath	-27
r2 be	68
r2 bedroom	-30
r2 behind	32
r2 bolts	33
r2 boxes	38
r2 brackets	-28
r2 bring	20
r2 but	18
r2 buy	47
r2 by	-47
r2 call	-16
r2 can't	-51
r2 cap	61
r2 center	105
r2 changed	24
r2 close	32
r2 closet	-20
r2 covers	-46
r2 cracked	85
r2 crown	-60
r2 cut	52
r2 dash	-16
r2 do	39
r2 door	-22
r2 doors	-89
r2 down	-136
r2 each	63
r2 eight	35
r2 eighteen	-27
r2 elbows	19
r2 eleven	-77
r2 em	128
r2 epoxy	-34
r2 every	17
r2 fifty	-90
r2 fine	58
r2 five	-116
r2 footers	43
r2 for	41
r2 forty	43
r2 four	-44
r2 fourteen	55
r2 fridays	-65
r2 ft	16
r2 gal	20
r2 gang	-43
r2 go	44
r2 got	84
r2 had	26
r2 half	41
r2 hang	41
r2 hangers	49
r2 he	-15
r2 he'll	29
r2 he's	-41
r2 hour	-87
r2 house	56
r2 hundred	38
r2 hung	53
r2 i	37
r2 i'll	54
r2 in	27
r2 inch	55
r2 kitchen	20
r2 latch	38
r2 lift	-51
r2 me	-55
r2 missing	37
r2 monday	-36
r2 my	31
r2 need	-47
r2 night	-65
r2 nine	-87
r2 ninety	66
r2 no	17
r2 not	41
r2 nothing	-47
r2 now	65
r2 nuts	57
r2 of	18
r2 off	-43
r2 old	53
r2 on	55
r2 one	-44
r2 ones	19
r2 open	-54
r2 or	57
r2 out	-27
r2 outlets	34
r2 over	-47
r2 panel	39
r2 plaster	83
r2 plates	40
r2 pound	26
r2 put	63
r2 quarter	37
r2 return	40
r2 right	-30
r2 ring	66
r2 rolls	29
r2 s	-45
r2 screws	-23
r2 set	-41
r2 seven	-45
r2 she	19
r2 she's	58
r2 sheet	19
r2 sheets	-26
r2 short	65
r2 side	56
r2 six	19
r2 sixteen	69
r2 sixty	42
r2 so	-31
r2 still	-41
r2 street	-30
r2 supposed	35
r2 switch	-18
r2 ten	16
r2 that	-70
r2 them's	-23
r2 there	24
r2 there's	-56
r2 these	21
r2 they	-35
r2 thing	-72
r2 third	19
r2 thirty	35
r2 this	25
r2 those	-82
r2 three	-23
r2 thursday	-37
r2 tile	16
r2 time	-32
r2 treads	-25
r2 truck	28
r2 tub	40
r2 twelve	17
r2 twenty	125
r2 two	24
r2 under	24
r2 us	-96
r2 used	31
r2 want	36
r2 way	-28
r2 we	-27
r2 we're	-30
r2 where	-20
r2 window	-44
r2 windows	-23
r2 work	-62
r2 x	72
r2 you	26
r2 zero	-28
r2. "	37
r2. (	-43
r2. +	17
r2. -ing	35
r2. .	19
r2. 1	26
r2. :	-79
r2. Name	-76
r2. letter	37
r2. n't	29
r2. one	-25
r2. unit	42
r3 "	-54
r3 '	-63
r3 )	-29
r3 +	22
r3 -	-38
r3 /	18
r3 1	35
r3 24	34
r3 3	26
r3 4	-33
r3 5	93
r3 7	15
r3 8	69
r3 :	-53
r3 a	-32
r3 and	33
r3 ask	-15
r3 at	66
r3 back	-39
r3 bags	54
r3 base	-32
r3 bath	55
r3 be	17
r3 before	-52
r3 bit	52
r3 board	-65
r3 boards	49
r3 bottom	57
r3 box	47
r3 breakers	18
r3 broken	48
r3 can	49
r3 cans	-23
r3 closet	44
r3 color	-58
r3 corner	-26
r3 cover	58
r3 crack	-28
r3 cracked	-72
r3 cut	-46
r3 did	-26
r3 do	-21
r3 don't	-16
r3 door	109
r3 each	-26
r3 em	-29
r3 end	-60
r3 fan	-17
r3 fault	-34
r3 feet	21
r3 fifty	30
r3 flapper	-40
r3 flat	73
r3 floor	37
r3 footers	28
r3 for	-50
r3 from	-87
r3 ft	-30
r3 gang	85
r3 gap	59
r3 garage	-43
r3 gets	19
r3 glass	24
r3 go	38
r3 goes	43
r3 good	-68
r3 got	62
r3 guy	-45
r3 hangers	55
r3 has	20
r3 have	70
r3 he	-56
r3 head	16
r3 her	60
r3 hot	-31
r3 hundred	-28
r3 i'll	-60
r3 i'm	-47
r3 if	-26
r3 in	-46
r3 is	-99
r3 it's	40
r3 joists	18
r3 kitchen	64
r3 last	-39
r3 left	18
r3 leg	39
r3 legs	32
r3 lid	39
r3 lift	-75
r3 like	-25
r3 m	-47
r3 me	23
r3 missing	-73
r3 monday	-42
r3 more	-36
r3 morning	-72
r3 need	81
r3 new	-28
r3 ninety	-37
r3 no	-20
r3 not	56
r3 now	-56
r3 office	-29
r3 old	-29
r3 on	-35
r3 one	50
r3 other	38
r3 out	118
r3 over	-60
r3 paint	58
r3 panel	50
r3 panels	67
r3 plate	51
r3 porch	19
r3 quarter	26
r3 quit	-17
r3 radio	-93
r3 range	-40
r3 room	-48
r3 s	26
r3 safe	63
r3 says	40
r3 screens	-64
r3 screws	29
r3 second	-58
r3 seventy	87
r3 short	47
r3 side	-21
r3 sink	53
r3 six	-41
r3 sixteen	35
r3 so	-43
r3 stairs	89
r3 sticks	-39
r3 still	-40
r3 stone	-48
r3 studs	53
r3 take	58
r3 tap	50
r3 tape	92
r3 ten	-70
r3 then	15
r3 there	-26
r3 thermostat	-50
r3 they	-40
r3 they're	23
r3 thing	-34
r3 thirty	-21
r3 those	34
r3 tile	-15
r3 to	-19
r3 today	-103
r3 took	44
r3 top	17
r3 tread	-77
r3 trim	-42
r3 truck	-24
r3 tub	90
r3 tubes	30
r3 twelve	-18
r3 twenty	35
r3 two	-26
r3 under	-20
r3 up	-38
r3 used	-61
r3 van	32
r3 vanity	22
r3 vent	-23
r3 want	19
r3 wants	30
r3 way	78
r3 we	62
r3 we're	39
r3 week	-57
r3 were	-16
r3 white	-71
r3 wrong	-35
r3 x	40
r3. "	-54
r3. '	-63
r3. 's	29
r3. )	-29
r3. +	22
r3. -	-38
r3. -ed	60
r3. -ing	-55
r3. -ly	17
r3. -s	-19
r3. 1	45
r3. :	-53
r3. Name	-19
r3. letter	30
r3. n't	-30
r3. one	29
r3. word	-31
ran _. -s	65
read _. word	47
reading _. word	47
reads _. #	61
reads _. word	52
rfi _. word	-31
right _. word	-26
ring and _	41
rm _. word	-39
room _. -s	-21
room _. word	-75
route _. word	-40
rtu - _	-68
rule 	-35
rule eachOf	106
rule pair	117
rule quantity/decimal	43
rule quantity/whole+taken-back	42
rule range	39
saves _. #	-46
say _. word	51
says _. one	-42
says _. word	63
second _. word	-31
section _. #	-45
sent _. word	39
set _. word	79
sheet _. #	-26
sheet _. -s	-39
sheet a _	-56
short _. word	59
short by _	56
should be _	54
side _. word	45
six _. one	-31
six and _	-78
six by _	51
sixteen by _	41
size 60	17
size 99	28
size 9999	-37
size more	-50
so _. word	84
so buy _	21
so get _	54
so grab _	42
spacing _. word	45
square _. #	-29
square _. word	-36
swallowed 's word	70
swallowed l. -ing	33
swallowed l. -s	22
swallowed l. one	56
swallowed l. unit	-59
swallowed l. word	-38
swallowed one #	61
swallowed r. #	45
swallowed r. -s	-46
swallowed round 's word	85
swallowed round l. 's	85
swallowed round l. one	-38
swallowed round r. #	34
swallowed round r. one	19
swallowed round r. word	-45
swallowed round unit word	-54
swallowed round word word	-43
swallowed unit word	-59
swallowed word -s	-46
switch _. #	-31
take _. word	61
take the _	-24
ten _. word	-35
that _. -s	-44
that _. word	-79
that leaves _	79
that's _. -s	72
that's a _	28
the _. #	28
the _. -s	62
the _. one	-64
the _. unit	-72
the _. word	-70
the back _	-59
the big _	-28
the bottom _	-45
the first _	-47
the garage _	86
the house _	67
the last _	48
the left _	-104
the new _	-47
the number _	-29
the old _	-65
the other _	31
the right _	-70
the second _	-23
the twelve _	-42
then _. word	-45
there by _	-52
there's _. -s	-51
there's _. word	16
there's only _	75
they sent _	51
third _. word	-25
thirty by _	33
this _. #	-28
this _. word	-29
till _. word	-93
time saves _	-46
to _. #	69
to _. .	56
to _. word	22
to be _	41
to square _	-39
today , _	53
took _. -s	91
took _. word	17
truck _. word	-49
twelve _. #	-39
twenty by _	25
two _. #	48
two _. one	-19
two _. word	16
two and _	-37
two by _	88
type _. #	-22
under _. word	38
unit 's _	23
unit + _	32
unit , _	18
unit -s _	55
unit . _	-34
unit ._ ,	-45
unit ._ -	-27
unit ._ and	76
unit ._ is	-51
unit ._ of	60
unit ._ on	-51
unit ._ stroke	-38
unit ._ wire	-29
unit ._ with	-34
unit ._ x	38
unit / _	17
unit _ ,	-45
unit _ -	-27
unit _ -s	-54
unit _ one	-27
unit _. word	-91
unit head 0	-54
unit head 1	-27
unit head none	-17
units 0	-62
units 1	75
units 2	32
up , _	15
up _. word	61
up by _	-98
up to _	83
us _. -s	-90
used _. -s	22
used _. word	73
w 0	29
w 0142	-26
w 1	65
w 10	80
w 100	-29
w 11	-52
w 120	75
w 1200	92
w 121	30
w 140	-21
w 15	20
w 150	84
w 16	15
w 18	82
w 180	36
w 19	40
w 2.4	25
w 200	-55
w 204	-38
w 22	-41
w 24	41
w 240	-50
w 26	69
w 27	-28
w 28	-40
w 30	50
w 300	20
w 31	-79
w 310	-60
w 32	44
w 34	-39
w 35	78
w 36	86
w 38	35
w 4	-15
w 40	-103
w 400	-34
w 42	30
w 44	-39
w 4471	-91
w 48	81
w 50	38
w 55	53
w 555	-68
w 6	25
w 60	51
w 61	79
w 65	52
w 68	48
w 7	-115
w 70	36
w 7008	-54
w 71	22
w 72	74
w 8	32
w 80	72
w 84	-38
w 88	-77
w 9	21
w 900	83
w a	48
w couple	-16
w eight	38
w eleven	17
w fifteen	36
w forty	22
w four	-31
w hundred	63
w nine	-63
w nineteen	-77
w ninety	-37
w one	-38
w point	64
w seven	-137
w seventy	20
w six	46
w sixteen	65
w sixty	52
w ten	-33
w thirty	25
w twelve	51
w two	18
w zero	-22
wall _. #	87
want _. .	31
want _. word	34
wants _. ,	26
wants _. word	76
was _. word	37
we got _	15
we set _	86
we used _	17
which _. word	-16
with _. -s	76
with _. one	-18
with _. word	38
word $ _	-66
word 's _	40
word ( _	60
word + _	21
word , _	47
word - _	-34
word -ed _	-26
word ._ .	26
word ._ 1	29
word ._ 2	47
word ._ 20	21
word ._ 3	-82
word ._ 555	-20
word ._ 8	17
word ._ :	-54
word ._ @	41
word ._ adds	-69
word ._ aff	52
word ._ after	-62
word ._ all	-29
word ._ are	48
word ._ at	-23
word ._ behind	-15
word ._ block	-34
word ._ blocks	39
word ._ boards	45
word ._ brackets	48
word ._ brick	50
word ._ bucks	-150
word ._ by	58
word ._ came	34
word ._ can	-20
word ._ centres	29
word ._ cents	-49
word ._ clamps	21
word ._ clips	19
word ._ come	-34
word ._ deep	68
word ._ do	39
word ._ dollars	-84
word ._ door	-21
word ._ doors	71
word ._ down	-19
word ._ eight	-32
word ._ elbows	25
word ._ even	35
word ._ extra	62
word ._ fifty	-53
word ._ five	-24
word ._ flat	65
word ._ fourteen	-52
word ._ gets	-31
word ._ goes	-50
word ._ good	53
word ._ got	-27
word ._ had	-68
word ._ half	25
word ._ hand	-77
word ._ hangers	34
word ._ has	-89
word ._ he	-19
word ._ he's	-24
word ._ here	40
word ._ high	40
word ._ hinge	33
word ._ hinges	36
word ._ hole	-88
word ._ i	65
word ._ i'm	-19
word ._ if	26
word ._ in	-18
word ._ is	-66
word ._ ish	-52
word ._ k	-17
word ._ kitchen	-19
word ._ larch	-29
word ._ last	-63
word ._ layers	65
word ._ long	62
word ._ more	140
word ._ needs	-27
word ._ new	16
word ._ nine	48
word ._ number	56
word ._ o'clock	-62
word ._ old	46
word ._ out	-29
word ._ over	-85
word ._ panel	-121
word ._ please	23
word ._ says	-18
word ._ second	-85
word ._ seven	19
word ._ sharp	-34
word ._ she	-21
word ._ shelf	16
word ._ should	45
word ._ side	16
word ._ six	-24
word ._ sixty	-17
word ._ so	21
word ._ spaces	28
word ._ spare	43
word ._ starts	-18
word ._ studs	64
word ._ ten	38
word ._ that	-64
word ._ there's	-15
word ._ thing	-16
word ._ thirty	30
word ._ this	-55
word ._ tile	27
word ._ times	-102
word ._ today	-56
word ._ tomorrow	-56
word ._ up	34
word ._ wants	-35
word ._ was	-71
word ._ way	-46
word ._ we	-27
word ._ when	-27
word ._ wide	44
word ._ windows	33
word ._ with	30
word ._ x	-32
word / _	-64
word 1 _	19
word Name _	-86
word _ -ing	22
word _ .	26
word _ 1	22
word _ :	-54
word _ @	41
word _ Name	-33
word _ n't	-70
word head 1	19
word head 2	18
word head 3	68
word letter _	-76
word one _	-22
words # -s	-23
words # 1	44
words # one	35
words # unit	34
words # word	29
words 's one	-43
words 's unit	-32
words 's word	15
words , -s	-31
words -ed #	-27
words -ed -s	43
words -ed word	-24
words -ing #	60
words -ing -s	31
words -ing word	-20
words -s one	-42
words -s unit	-16
words -s word	26
words . -s	67
words . word	20
words l. #	39
words l. ,	16
words l. .	66
words l. :	-20
words l. letter	-98
words l. one	-59
words l. unit	-49
words letter #	-66
words letter unit	-44
words letter word	-45
words one #	-89
words one one	-38
words r. 's	30
words r. -ed	-15
words r. -ing	-18
words r. .	-48
words r. 1	79
words r. Name	-45
words r. letter	19
words r. n't	-48
words r. one	-37
words r. word	15
words round # one	-25
words round # word	-29
words round 's #	50
words round 's word	-58
words round l. #	-34
words round l. 's	-23
words round l. ,	-34
words round l. -	-26
words round l. -s	20
words round l. one	-47
words round l. unit	-19
words round l. word	44
words round one #	-83
words round one one	-15
words round one word	-22
words round r. #	59
words round r. 's	-16
words round r. ,	35
words round r. -ing	69
words round r. -s	-26
words round r. one	-92
words round r. word	-18
words round unit #	-84
words round unit word	27
words round word #	91
words round word 's	-16
words round word ,	35
words round word -ing	48
words round word -s	-15
words round word letter	42
words round word one	-71
words round word unit	-37
words unit #	-16
words unit one	-27
words word 's	18
words word -ed	-42
words word .	-78
words word 1	39
words word Name	-33
words word letter	35
words word n't	-32
x _. #	79
x _. ,	44
x _. .	22
x _. letter	16
x _. word	-29
you at _	-45
zone _. word	-46
`;
