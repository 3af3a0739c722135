/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `

 - _	66

 _. )	-19

 _. -	-23

 _. .	-107
  _	35
 _. -	24
 _. .	-118
 _. 1	28
 _. letter	23
 _. one	24
 _. word	28
 bath _	-34
 bedroom _	-17
 bring _	37
 detail _	-35
 flat _	-34
 got _	50
 grade _	-34
 hung _	44
 it's _	-43
 lot _	-35
 need _	64
 put _	45
 r _	-52
 rm _	-36
 room _	-19
 route _	-13
 suite _	-39
 the _	-49
 unit _	-41
" 
 _	-21
" , _	14
" . _	-19
" / _	-21
# # _	35
# -ed _	65
# -s _	14
# ._ -	22
# ._ .	-118
# ._ bucks	-22
# ._ by	-16
# ._ dollars	-55
# ._ doors	20
# ._ more	-51
# ._ o'clock	-74
# ._ of	54
# ._ on	42
# ._ screws	68
# ._ seven	-49
# ._ tile	40
# ._ to	-46
# ._ treads	61
# ._ way	-71
# ._ x	15
# _ -	22
# _ .	-118
# _ 1	28
# _ letter	23
# _ one	24
# _ word	14
# letter _	-52
# unit _	-29
# word _	-39
$ ._ 	-20
$ ._ ,	-44
$ ._ .	-46
$ _ #	-20
$ _ ,	-44
$ _ .	-46
$ _ word	-55
$ _. #	-20
$ _. ,	-44
$ _. .	-46
$ _. word	-55
's -ed _	27
's -ing _	63
's ._ ,	28
's ._ across	32
's ._ and	33
's ._ by	49
's ._ five	-18
's ._ in	26
's ._ left	26
's ._ long	55
's ._ of	-71
's ._ off	26
's ._ on	-42
's ._ so	30
's ._ two	14
's _ ,	28
's _ -s	49
's _ one	-36
's _ word	48
's one _	-19
's unit _	-57
's word _	30
( _ word	51
( _. word	51
( word _	50
) , _	50
+ _ -s	28
+ _ word	52
+ _. -s	28
+ _. word	52
, $ _	-54
, 's _	34
, -ed _	12
, -ing _	26
, ._ 	46
, ._ -	-34
, ._ and	23
, ._ at	-25
, ._ deep	21
, ._ high	13
, ._ left	27
, ._ of	121
, ._ out	-47
, ._ short	21
, ._ wide	26
, _ #	46
, _ -	-34
, _ -ed	41
, _ -ing	15
, _ -s	29
, _ 1	18
, _ letter	17
, _ unit	15
, _. #	46
, _. -	-34
, _. -ed	41
, _. -ing	15
, _. -s	29
, _. 1	18
, _. letter	17
, _. unit	15
, and _	44
, bring _	29
, buy _	30
, day _	-48
, get _	28
, have _	32
, need _	68
, needs _	26
, now _	20
, order _	111
, section _	-37
, so _	25
, spec _	37
, unit _	-45
, used _	17
, word _	35
- ._ 	-38
- ._ -	-16
- _ #	-38
- _ -	-16
- _ -s	-40
- _ 1	27
- _ unit	12
- _ word	-17
- _. #	-38
- _. -	-16
- _. -s	-40
- _. 1	27
- _. unit	12
- _. word	-17
-ed , _	89
-ed ._ .	62
-ed ._ and	-21
-ed ._ of	18
-ed / _	-13
-ed _ -s	-49
-ed _ .	62
-ing , _	19
-ing ._ and	31
-ing ._ more	-36
-ing _ -ing	-21
-ing _ -s	36
-ing _ word	53
-ing word _	12
-ly word _	-70
-s 's _	21
-s , _	24
-s . _	54
-s ._ ,	61
-s ._ .	69
-s ._ more	23
-s ._ of	-53
-s ._ so	61
-s ._ the	-40
-s ._ to	20
-s : _	38
-s _ ,	61
-s _ -ing	-15
-s _ .	69
-s _ unit	20
-s _ word	39
-s word _	42
. 
 _	-18
. $ _	-59
. -ed _	66
. ._ )	-55
. ._ :	-14
. ._ of	-43
. / _	-18
. _ )	-55
. _ -s	37
. _ :	-14
. _ word	21
. _. )	-55
. _. -s	37
. _. :	-14
. _. word	21
. bath _	-58
. bring _	33
. buy _	40
. get _	59
. have _	59
. need _	47
. order _	127
. short _	24
. used _	47
. word _	-14
/ - _	66
/ ._ )	-19
/ ._ -	-23
/ ._ .	-76
/ _ )	-19
/ _ -	-23
/ _ .	-76
0 l. word	25
0 words round	22
0figures 4 l. -	-34
0figures 4 l. 1	-17
0figures 4 r. #	-14
0figures 4 r. .	-14
0figures 4 r. word	-19
1 , _	-41
1 - _	-56
1 . _	38
1 ._ x	16
1 / _	22
1 1 _	-50
1 _ 1	-80
1 _ letter	16
1 _ word	40
1 figures 1	107
1 l 
	-40
1 l +	15
1 l ,	51
1 l -	22
1 l .	34
1 l and	62
1 l another	-121
1 l at	108
1 l back	-25
1 l bath	-51
1 l be	25
1 l bottom	-39
1 l bring	82
1 l buy	76
1 l by	-13
1 l every	-113
1 l from	26
1 l get	121
1 l good	-46
1 l got	67
1 l grab	70
1 l in	67
1 l inch	52
1 l it	28
1 l it's	-16
1 l last	-138
1 l left	-24
1 l long	-38
1 l longer	-32
1 l me	57
1 l need	52
1 l needs	18
1 l new	-90
1 l no	-56
1 l of	26
1 l old	-82
1 l on	-15
1 l order	20
1 l other	-121
1 l put	41
1 l right	-51
1 l second	-59
1 l short	78
1 l so	26
1 l square	-69
1 l that	-129
1 l the	-205
1 l there's	74
1 l third	-21
1 l this	-64
1 l to	-21
1 l type	-40
1 l used	27
1 l want	50
1 l with	-19
1 l. 's	43
1 l. +	15
1 l. ,	51
1 l. -	22
1 l. -ing	-90
1 l. -s	-44
1 l. .	34
1 l. /	-40
1 l. 1	26
1 l. unit	17
1 l. word	-62
1 letter _	54
1 parts	98
1 r 
	24
1 r ,	-13
1 r -	-47
1 r 1	20
1 r b	14
1 r before	-23
1 r behind	-33
1 r bracket	43
1 r by	-64
1 r door	33
1 r down	-24
1 r eight	28
1 r five	-34
1 r for	19
1 r from	-27
1 r go	-31
1 r goes	-26
1 r hand	-70
1 r has	-44
1 r he	-24
1 r i	-19
1 r is	-124
1 r left	-16
1 r leg	-38
1 r new	57
1 r nine	36
1 r of	-234
1 r off	28
1 r old	21
1 r on	-51
1 r one	-20
1 r out	-21
1 r panel	-90
1 r please	-15
1 r reducer	30
1 r so	-61
1 r spare	25
1 r that	-12
1 r they	-35
1 r thing	-30
1 r thursday	-23
1 r tile	-21
1 r to	-54
1 r tomorrow	27
1 r up	15
1 r was	-23
1 r wax	14
1 r way	-16
1 r with	-56
1 r. 's	-22
1 r. ,	-13
1 r. -	-47
1 r. -ed	-33
1 r. -ing	30
1 r. -s	-89
1 r. /	24
1 r. 1	59
1 r. one	34
1 r. word	-27
1 words	-81
10 - _	22
12 - _	-72
12 figures 1	-25
12 l 	-25
12 l 
	-29
12 l ,	-21
12 l -	30
12 l .	-23
12 l :	55
12 l a	86
12 l after	-48
12 l all	112
12 l and	78
12 l are	13
12 l at	-138
12 l before	-87
12 l between	-58
12 l breaker	-33
12 l circuit	-51
12 l cloud	-22
12 l detail	-35
12 l exit	-18
12 l flat	-19
12 l four	-21
12 l get	13
12 l got	51
12 l had	59
12 l half	-13
12 l have	23
12 l in	-58
12 l is	-16
12 l it	30
12 l it's	-43
12 l me	18
12 l need	43
12 l no	-14
12 l number	-97
12 l of	-45
12 l on	23
12 l one	-21
12 l only	15
12 l past	-60
12 l pulled	20
12 l route	-48
12 l says	20
12 l set	23
12 l six	29
12 l so	29
12 l there's	24
12 l to	29
12 l tomorrow	31
12 l unit	-61
12 l up	50
12 l used	50
12 l want	32
12 l wants	26
12 l was	-20
12 l with	52
12 l x	40
12 l. #	-25
12 l. ,	-21
12 l. -	30
12 l. -ed	54
12 l. -ing	52
12 l. -s	-17
12 l. .	-23
12 l. /	-29
12 l. :	55
12 l. Name	-67
12 l. letter	43
12 l. unit	26
12 parts	38
12 r 	-33
12 r )	-13
12 r :	-41
12 r a	28
12 r at	-21
12 r boards	39
12 r bucks	-44
12 r by	78
12 r cans	25
12 r deep	14
12 r door	-58
12 r doors	22
12 r for	53
12 r four	-26
12 r hangers	34
12 r hinges	14
12 r hole	-83
12 r i	28
12 r in	-31
12 r it	-27
12 r it's	-17
12 r left	42
12 r loose	26
12 r more	20
12 r o'clock	-39
12 r of	105
12 r out	-12
12 r over	16
12 r screws	-19
12 r seven	-25
12 r so	18
12 r studs	45
12 r the	-33
12 r this	-36
12 r times	-40
12 r tomorrow	-34
12 r was	-52
12 r with	52
12 r x	21
12 r. #	-33
12 r. 's	29
12 r. )	-13
12 r. -s	66
12 r. 1	33
12 r. :	-41
12 r. letter	24
12 r. unit	41
12 words	32
12 words round	-47
16 x _	26
2 figures 1	-24
2 l 	18
2 l 
	-23
2 l (	38
2 l +	21
2 l -	-19
2 l a	-35
2 l about	20
2 l another	50
2 l at	-87
2 l back	53
2 l bath	-69
2 l be	26
2 l bed	-41
2 l bedroom	-87
2 l bring	34
2 l buy	63
2 l cut	30
2 l day	-38
2 l foot	12
2 l get	45
2 l got	17
2 l grade	-34
2 l have	52
2 l header's	55
2 l in	-20
2 l it	-33
2 l me	-28
2 l missing	26
2 l need	81
2 l number	-43
2 l of	-36
2 l on	19
2 l one	-18
2 l or	-28
2 l order	-29
2 l put	36
2 l six	-24
2 l so	54
2 l takes	-43
2 l the	74
2 l there's	-30
2 l up	45
2 l used	31
2 l want	18
2 l with	34
2 l zone	-39
2 l. #	18
2 l. 's	22
2 l. (	38
2 l. +	21
2 l. -	-19
2 l. -ed	29
2 l. -s	40
2 l. /	-23
2 l. Name	-14
2 l. one	-51
2 l. unit	-38
2 l. word	20
2 parts	18
2 r )	14
2 r ,	-25
2 r -	-16
2 r .	-19
2 r 20	17
2 r :	-38
2 r bolts	13
2 r brackets	15
2 r by	74
2 r clamps	21
2 r doors	24
2 r elbows	16
2 r half	43
2 r i	24
2 r in	41
2 r is	-13
2 r left	38
2 r more	64
2 r new	21
2 r no	48
2 r of	142
2 r part	-69
2 r screws	51
2 r so	-19
2 r spare	26
2 r ten	19
2 r the	-65
2 r three	-16
2 r twenty	46
2 r two	55
2 r x	-19
2 r. )	14
2 r. ,	-25
2 r. -	-16
2 r. -ing	13
2 r. -s	-13
2 r. .	-19
2 r. 1	19
2 r. :	-38
2 r. one	90
2 r. unit	18
2 x _	21
20 figures 2	30
20 l 	44
20 l ,	63
20 l .	-21
20 l and	25
20 l at	-34
20 l be	25
20 l by	44
20 l it	26
20 l need	15
20 l out	56
20 l r	-45
20 l reads	-26
20 l says	23
20 l so	47
20 l that's	-33
20 l the	-45
20 l to	32
20 l under	47
20 l uppers	34
20 l used	30
20 l. #	44
20 l. 's	-14
20 l. ,	63
20 l. -ed	34
20 l. -ing	17
20 l. .	-21
20 l. letter	-40
20 r 	13
20 r -	-33
20 r .	71
20 r and	27
20 r bucks	-56
20 r by	52
20 r clips	21
20 r eighth	-16
20 r i	47
20 r is	55
20 r joist	13
20 r ninety	-46
20 r oc	49
20 r of	23
20 r off	-17
20 r on	68
20 r second	-60
20 r the	-25
20 r to	42
20 r treads	24
20 r twenty	-35
20 r two	-66
20 r wide	23
20 r. #	13
20 r. -	-33
20 r. -s	52
20 r. .	71
20 r. Name	-21
20 r. one	-138
20 r. word	42
20 words round	-30
4 x _	16
5 figures 1	-26
5 l 	79
5 l 
	-31
5 l ,	77
5 l -	-23
5 l .	44
5 l :	13
5 l after	-53
5 l all	-26
5 l and	61
5 l another	72
5 l at	-121
5 l be	34
5 l bring	24
5 l by	-29
5 l channel	-44
5 l cut	17
5 l day	-60
5 l door	-40
5 l five	-29
5 l flat	-44
5 l for	40
5 l get	44
5 l got	42
5 l has	19
5 l have	55
5 l in	-25
5 l it	-15
5 l level	-70
5 l me	49
5 l number	-73
5 l of	24
5 l on	15
5 l put	36
5 l r	-45
5 l room	-59
5 l so	26
5 l take	-69
5 l ten	-35
5 l the	17
5 l there's	-24
5 l till	-43
5 l to	25
5 l unit	-45
5 l us	25
5 l used	39
5 l wall	60
5 l with	40
5 l x	19
5 l zone	-39
5 l. #	51
5 l. 's	-23
5 l. ,	77
5 l. -	-23
5 l. -ed	30
5 l. -ing	38
5 l. -s	61
5 l. .	44
5 l. /	-31
5 l. :	13
5 l. Name	-34
5 l. letter	-31
5 l. one	-21
5 l. unit	-23
5 parts	39
5 r 
	-12
5 r )	-39
5 r -	-52
5 r 2	31
5 r :	-18
5 r a	-28
5 r and	46
5 r at	-46
5 r batts	-33
5 r brackets	24
5 r by	23
5 r eight	16
5 r five	-34
5 r has	-34
5 r in	52
5 r is	-62
5 r layers	45
5 r left	62
5 r long	31
5 r more	52
5 r new	21
5 r o'clock	-85
5 r of	164
5 r on	13
5 r one	-27
5 r outlets	27
5 r post	22
5 r shelves	26
5 r so	21
5 r the	-84
5 r things	-73
5 r three	24
5 r times	-84
5 r to	-46
5 r today	-43
5 r tomorrow	-59
5 r two	18
5 r wall	12
5 r way	-83
5 r x	41
5 r. #	13
5 r. )	-39
5 r. -	-52
5 r. -ed	36
5 r. -s	74
5 r. /	-12
5 r. 1	55
5 r. :	-18
5 r. one	-36
5 r. unit	20
5 words	30
555 - _	-30
60 figures 2	24
60 l $	-50
60 l ,	-15
60 l -	-55
60 l .	35
60 l :	13
60 l a	29
60 l about	35
60 l all	31
60 l and	28
60 l at	137
60 l be	-32
60 l by	55
60 l fifty	-25
60 l for	39
60 l in	-59
60 l is	45
60 l it's	21
60 l need	38
60 l needs	14
60 l number	-78
60 l says	30
60 l so	35
60 l to	66
60 l wants	53
60 l x	56
60 l. $	-50
60 l. 's	96
60 l. ,	-15
60 l. -	-55
60 l. -ed	26
60 l. -ing	46
60 l. -ly	35
60 l. .	35
60 l. :	13
60 l. letter	21
60 l. one	-66
60 l. word	58
60 parts	-21
60 r 	52
60 r ,	-20
60 r -	28
60 r .	19
60 r :	-17
60 r across	32
60 r and	-29
60 r at	20
60 r balusters	21
60 r boards	15
60 r brick	27
60 r bucks	-66
60 r by	-42
60 r dollars	-86
60 r even	23
60 r fifty	-53
60 r flat	41
60 r flowing	13
60 r for	-14
60 r of	-24
60 r off	57
60 r on	-12
60 r pulls	23
60 r seven	-49
60 r so	66
60 r that	-60
60 r thick	45
60 r to	45
60 r wide	40
60 r x	23
60 r. #	53
60 r. 's	23
60 r. ,	-20
60 r. -	28
60 r. -ing	-15
60 r. -s	-13
60 r. .	19
60 r. :	-17
60 r. letter	59
60 r. one	-60
60 r. word	27
60 words	27
60 x _	19
9 _. 1	-31
99 l $	-43
99 l about	22
99 l be	26
99 l in	-47
99 l is	56
99 l it's	-20
99 l return	15
99 l the	51
99 l to	21
99 l was	59
99 l. $	-43
99 l. -s	22
99 l. one	-78
99 l. unit	-22
99 l. word	73
99 parts	18
99 r 	20
99 r ,	43
99 r -	32
99 r and	79
99 r bucks	-57
99 r by	13
99 r on	26
99 r so	36
99 r to	-18
99 r. #	20
99 r. ,	43
99 r. -	32
99 r. -ed	18
99 r. -s	-40
99 r. word	25
99 words	89
99 words round	-15
999 0figures 4	-64
999 l $	-48
999 l ,	-21
999 l -	-18
999 l .	46
999 l 555	-17
999 l a	-96
999 l about	41
999 l and	24
999 l are	13
999 l at	38
999 l by	14
999 l got	68
999 l is	88
999 l not	14
999 l rm	-48
999 l room	-24
999 l section	-53
999 l suite	-34
999 l that's	55
999 l to	43
999 l wants	26
999 l was	-42
999 l x	-48
999 l. $	-48
999 l. 's	43
999 l. ,	-21
999 l. -	-18
999 l. -ed	17
999 l. -ing	44
999 l. -s	56
999 l. .	46
999 l. 1	-50
999 l. letter	-24
999 l. unit	-63
999 oh	-76
999 parts	-41
999 r 
	-18
999 r ,	35
999 r -	-69
999 r .	20
999 r 555	-33
999 r :	-17
999 r across	47
999 r and	-32
999 r at	56
999 r block	-28
999 r bucks	-80
999 r by	-18
999 r centres	24
999 r deep	41
999 r dollars	-52
999 r five	30
999 r for	-80
999 r four	-14
999 r high	71
999 r of	78
999 r off	45
999 r pickets	26
999 r screws	43
999 r so	17
999 r the	41
999 r to	-26
999 r wide	27
999 r wire	13
999 r with	31
999 r x	47
999 r. 's	40
999 r. ,	35
999 r. -	-69
999 r. .	20
999 r. /	-18
999 r. 1	-64
999 r. :	-17
999 r. letter	-25
999 r. one	57
999 r. unit	-44
999 swallowed round	-30
999 words	112
999 words round	73
9999 figures 4	-36
9999 figures 5	-40
9999 l 	-43
9999 l $	-26
9999 l ,	15
9999 l -	-23
9999 l at	120
9999 l code	-22
9999 l from	-61
9999 l in	-29
9999 l switch	-46
9999 l. #	-43
9999 l. $	-26
9999 l. 's	38
9999 l. ,	15
9999 l. -	-23
9999 l. word	-37
9999 r 	-25
9999 r ,	21
9999 r .	-12
9999 r and	-42
9999 r by	19
9999 r in	-21
9999 r long	53
9999 r to	74
9999 r x	-33
9999 r. #	-25
9999 r. ,	21
9999 r. -s	-25
9999 r. .	-12
9999 r. letter	-33
9999 r. unit	-21
9999 r. word	40
9999 swallowed round	55
9999 words round	34
: 
 _	-19
: ._ of	14
: / _	-19
: _ -ed	24
: _ -s	37
: _ letter	34
: _ word	44
: _. -ed	24
: _. -s	37
: _. letter	34
: _. word	44
: unit _	-12
: word _	-22
Name ._ .	-27
Name _ .	-27
Name _ word	-59
Name word _	-28
_ 's -ed	-20
_ 's one	29
_ ) .	36
_ ) word	-112
_ , 's	47
_ , -s	-25
_ , 1	-25
_ , one	29
_ , unit	16
_ , word	16
_ - 1	-15
_ - word	-51
_ -ed ,	16
_ -ed -s	55
_ -ed .	40
_ -ed unit	51
_ -ed word	-28
_ -ing -s	35
_ -ing unit	35
_ -ing word	-52
_ -s #	75
_ -s 's	-46
_ -s +	12
_ -s ,	19
_ -s -ed	60
_ -s -s	-15
_ -s .	-19
_ -s letter	31
_ -s n't	-32
_ -s unit	-44
_ -s word	56
_ . #	-49
_ . 's	41
_ . -ed	50
_ . -s	13
_ . 1	35
_ . letter	38
_ . one	-33
_ / 1	72
_ 1 "	33
_ 1 #	-44
_ 1 -	70
_ 1 1	-64
_ 1 letter	45
_ 1 unit	44
_ 1 word	26
_ : 1	-65
_ : word	-13
_ @ 1	14
_ Name Name	-34
_ letter #	-54
_ letter -s	-29
_ letter 1	80
_ n't word	-71
_ one #	-72
_ one one	-52
_ one unit	73
_ unit #	37
_ unit ,	48
_ unit -s	17
_ unit 1	-57
_ unit one	-19
_ unit unit	-17
_ unit word	16
_ word #	71
_ word (	-20
_ word ,	-27
_ word -	-32
_ word -ed	-30
_ word -ing	23
_ word -s	32
_ word .	26
_ word /	14
_ word 1	54
_ word :	-74
_ word Name	-87
_ word n't	19
_ word one	20
_ word unit	17
_. 
 1	72
_. ) .	36
_. ) word	-112
_. , 's	47
_. , -s	-25
_. , 1	-25
_. , one	29
_. , unit	16
_. , word	16
_. - 1	-15
_. - word	-51
_. . #	-49
_. . 's	41
_. . -ed	50
_. . -s	13
_. . 1	35
_. . letter	38
_. . one	-33
_. 2 -	29
_. 2 letter	27
_. 2.4 unit	16
_. 20 unit	17
_. 4 letter	22
_. 4 unit	-17
_. 5 unit	13
_. 555 1	-33
_. : 1	-65
_. : word	-13
_. @ 1	14
_. a word	-50
_. across word	54
_. alder Name	-12
_. along word	19
_. an unit	-56
_. and 1	-15
_. and Name	36
_. and letter	-16
_. and one	-27
_. and unit	32
_. are word	24
_. at one	96
_. at unit	-61
_. before word	27
_. blank -s	32
_. block word	43
_. boards #	35
_. boards word	24
_. bracket word	43
_. brackets word	30
_. brick word	36
_. bucks #	-101
_. bucks word	-106
_. but word	40
_. by 1	44
_. by one	15
_. by word	22
_. call word	17
_. came word	26
_. cans word	25
_. centres ,	20
_. clear word	17
_. clips #	27
_. dash one	-26
_. deep ,	29
_. deep word	17
_. dollars word	-95
_. doors word	42
_. down word	-40
_. eight one	19
_. eight unit	-50
_. end -s	18
_. end word	16
_. even #	23
_. extra word	52
_. fifty unit	35
_. fifty word	-53
_. flat word	40
_. for word	28
_. four one	-14
_. from word	28
_. goes word	-30
_. good one	32
_. half unit	28
_. hangers word	19
_. has unit	-19
_. has word	-63
_. he -s	-22
_. he's word	-15
_. high ,	60
_. high word	25
_. hinges word	35
_. hole word	-95
_. i word	29
_. i'm word	-15
_. if word	-22
_. in 1	-57
_. in one	-53
_. in unit	-15
_. in word	34
_. instead word	37
_. is -ed	-20
_. is one	-12
_. is word	-104
_. it -s	-18
_. it's word	-21
_. joist -s	16
_. larch Name	-23
_. last word	-35
_. layer word	-75
_. layers word	45
_. left #	73
_. left .	18
_. left unit	25
_. leg word	-21
_. long #	44
_. long word	40
_. man word	-42
_. more #	29
_. more -s	13
_. more one	22
_. more word	17
_. new -s	12
_. new word	64
_. nine one	-30
_. nos .	50
_. nothing word	-60
_. now word	-19
_. o'clock word	-39
_. oc ,	39
_. oc word	12
_. of 's	-22
_. of 1	72
_. of one	-25
_. of unit	72
_. of word	-23
_. off word	66
_. old word	20
_. on one	42
_. on unit	-27
_. one one	-33
_. out word	-18
_. outlets word	39
_. panel word	-100
_. part word	-69
_. pickets word	26
_. pm word	-52
_. quid #	-49
_. says word	-54
_. screw word	14
_. screws .	14
_. screws word	35
_. second word	-37
_. seven #	-31
_. seven one	-23
_. seven word	-21
_. shelf -s	46
_. shelves word	24
_. short word	37
_. so 's	-15
_. so letter	39
_. so one	-25
_. so word	19
_. spare word	26
_. stainless word	28
_. studs word	13
_. ten unit	38
_. that -s	-52
_. that word	14
_. the 's	-16
_. they word	14
_. things word	-92
_. this -ing	-36
_. three one	27
_. three unit	13
_. tile word	17
_. tiles word	19
_. times 's	-52
_. times word	-65
_. to 1	30
_. to one	-74
_. to word	35
_. today #	-54
_. tomorrow .	-35
_. tomorrow word	-75
_. treads #	43
_. twelve unit	28
_. twenty one	-35
_. two unit	25
_. two word	-16
_. up word	26
_. used .	38
_. wants word	-52
_. was word	-37
_. wax word	14
_. way word	-93
_. we word	-52
_. when word	33
_. white word	37
_. wide ,	37
_. wide word	24
_. windows word	21
_. wire -s	52
_. with unit	-34
_. x 1	71
a _. #	77
a _. one	-35
a _. word	-33
a a	-30
a aa	36
a about	-89
a across	68
a aff	58
a after	-28
a again	-17
a ain't	48
a air	-26
a alder	-34
a alive	-24
a all	-43
a along	48
a already	-17
a also	64
a am	-32
a amp	-32
a an	-25
a anchor	33
a anchors	41
a and	23
a another	-52
a are	31
a area	-52
a arm	21
a around	26
a as	-47
a ask	-45
a at	-17
a away	-27
a back	73
a bad	21
a bag	59
a bags	20
a ball	57
a balusters	-23
a bar	49
a base	22
a bases	-34
a bath	52
a bathroom	-73
a baths	54
a batts	-20
a because	37
a bedroom	-81
a bee	-20
a been	-13
a before	-54
a behind	55
a below	47
a bent	-55
a better	-39
a between	-26
a big	37
a bit	58
a black	73
a blade	55
a blank	30
a blind	-57
a blocks	31
a blue	-34
a board	41
a boards	106
a bolt	66
a bolts	66
a book	-51
a boots	-48
a bought	50
a box	72
a bracket	63
a brackets	12
a brass	100
a bravo	-29
a breakers	-33
a brick	39
a broken	22
a brown	14
a brushes	32
a bucket	34
a bucks	-113
a buddy	-66
a building	32
a built	-42
a bulbs	40
a bullnose	-30
a bumpers	13
a burned	54
a but	75
a buzzes	-27
a by	23
a c	-15
a cabinet	-40
a cable	-52
a call	-25
a came	14
a can	83
a can't	-29
a cans	58
a cap	74
a carton	-19
a case	34
a casing	30
a ceiling	40
a center	69
a centers	114
a centre	58
a centres	38
a chance	-55
a change	22
a changed	22
a chimney	52
a chipped	53
a chrome	-15
a clamps	72
a clip	13
a clips	74
a close	-20
a closet	25
a coat	-81
a coats	-13
a code	40
a coffee	61
a coil	33
a cold	42
a color	-27
a colour	-29
a come	-47
a comes	-44
a coming	38
a concrete	-37
a copper	20
a cord	-26
a cost	-42
a couplings	45
a court	-27
a cove	19
a cover	31
a covers	-33
a crack	-23
a crown	27
a cut	-14
a cutouts	17
a d	18
a dash	-48
a day	-61
a days	-38
a dead	26
a deck	36
a decks	35
a deep	93
a degrees	-31
a dialed	20
a did	-31
a different	29
a dimmers	17
a dining	-33
a disposal	-64
a doesn't	-16
a dollar	-109
a dollars	-128
a don't	-90
a done	12
a dont	39
a door	-27
a door's	70
a doors	12
a double	37
a down	-18
a dozen	-78
a drawer	-18
a drawing	13
a driveway	-72
a drop	45
a dryer	-82
a duct	55
a due	16
a each	49
a edge	52
a eggshell	61
a eight	30
a eighteen	18
a eighths	-35
a eights	26
a eighty	-26
a either	-60
a elbow	42
a elbows	63
a electrician	37
a eleven	-29
a em	94
a end	19
a epoxy	-25
a euro	-130
a even	29
a every	23
a exit	-13
a expansion	45
a extra	43
a face	15
a fan	70
a faucet	-14
a feet	-25
a fifties	-42
a fifty	36
a filter	14
a finish	-45
a finished	30
a first	-12
a five	16
a fixed	15
a flat	56
a flex	-57
a floor	21
a flowing	15
a flue	17
a foil	-17
a foot	42
a footers	71
a footings	23
a forgets	-33
a forgot	-19
a forty	35
a found	-14
a four	-21
a fours	52
a fourteen	24
a fridge	14
a from	29
a front	-18
a ft	-14
a full	42
a g	21
a gal	13
a gallon	-56
a gang	-74
a garage	93
a gasket	56
a gate	-34
a gate's	-34
a gave	-12
a get	-23
a gets	-39
a gfci	17
a give	69
a glass	57
a glue	-35
a glued	-57
a go	-39
a goes	43
a going	41
a gonna	35
a good	27
a got	20
a gotta	-21
a grade	77
a grate	-52
a gray	19
a grease	15
a green	18
a ground	-33
a grout	46
a guy	-104
a guys	-59
a half	14
a hall	29
a hand	-57
a handle	-125
a hang	-49
a hangers	84
a hardware	12
a has	-86
a hatch	-31
a have	26
a he	-59
a he'll	-18
a he's	-45
a head	43
a heading	-26
a heads	-64
a heater	-29
a heavy	16
a here	23
a high	34
a him	-72
a hinge	37
a hinges	-26
a his	14
a holding	32
a hole	-99
a holes	34
a home	-12
a homeruns	-27
a hook	-36
a hooks	16
a hose	45
a hour	-14
a house	38
a how	25
a hums	-84
a hydro	-54
a i	-75
a i'm	-15
a i've	69
a if	-27
a inch	27
a inches	61
a inside	-38
a instead	49
a into	41
a is	-30
a ish	-54
a island	-41
a isn't	37
a it	-43
a it'd	-18
a it's	-53
a its	-19
a jacks	14
a job	-20
a just	-55
a k	-73
a key	-62
a keys	-16
a kind	26
a kit	61
a knee	12
a knobs	34
a lady	13
a lag	17
a lags	14
a lamp	27
a landing	38
a larch	-23
a laser	35
a last	-46
a latch	15
a latest	-70
a lath	-25
a laundry	47
a lavs	47
a layer	-104
a layers	45
a layout	16
a lead	16
a leak	21
a leaks	-17
a leaning	16
a leave	-28
a leaves	44
a left	54
a leg	47
a legs	34
a let	-26
a lid	61
a lift	-93
a light	56
a like	-79
a lime	46
a lintel	22
a little	15
a live	31
a lock	-41
a long	115
a longer	30
a longer _	-32
a look	-64
a loose	-34
a lot	-90
a low	-16
a m	-21
a make	-23
a man	-43
a master	-19
a mate	-82
a max	63
a me	-20
a mesh	27
a meter	78
a mil	16
a mill	-42
a min	-21
a minimum	65
a mirror	15
a missing	-93
a mm	28
a monday	-59
a more	65
a morning	-109
a move	67
a moved	-83
a must	-51
a my	19
a n	48
a nail	-22
a nails	78
a needs	-52
a new	33
a new _	-32
a newels	13
a next	20
a night	-76
a nine	-28
a nineteen	14
a ninety	40
a noon	-47
a nos	50
a not	-28
a nothing	-41
a now	28
a number	45
a nuts	54
a o'clock	-100
a oc	50
a of	29
a off	33
a office	-23
a offset	-35
a oh	-39
a ok	-33
a old	59
a on	24
a once	-12
a one	13
a open	-70
a opened	23
a opening	-21
a or	-37
a order	53
a ordered	44
a other	-27
a others	-17
a out	-17
a outlet	-16
a outlets	48
a outside	-45
a over	19
a owner	38
a pan	36
a panel	-82
a panels	78
a part	-69
a parts	16
a pass	-19
a past	-39
a patch	-57
a pavers	23
a per	80
a permit	-17
a pickets	47
a pieces	13
a piers	34
a pine	76
a pinned	23
a pins	27
a pipe	65
a place	-33
a plaster	62
a plate	42
a plates	24
a please	16
a plugged	46
a plugs	30
a plumber	-28
a ply	-59
a pm	-67
a point	-28
a pole	-118
a pop	-38
a poplar	16
a porcelain	33
a porch	-61
a post	52
a posts	42
a pound	-57
a power	-27
a pressure	28
a primed	20
a primer	76
a pull	28
a pulled	-14
a pulls	56
a pvc	-41
a quarter	-14
a quid	-58
a quiet	-28
a quit	-85
a radiator	45
a rail	-22
a ran	26
a rang	-47
a read	32
a reads	-18
a ready	-51
a red	30
a reducer	59
a remain	56
a rest	41
a return	32
a ring	70
a rise	40
a rod	20
a rods	42
a roller	15
a rolls	16
a room	29
a rough	14
a run	-20
a rungs	38
a runs	-19
a s	23
a safe	18
a said	-33
a sand	22
a sash	19
a satin	53
a saturday	24
a says	-15
a sconces	14
a scratched	39
a screwed	36
a screws	70
a seal	21
a sealed	43
a second	-52
a see	-29
a seven	-22
a seventy	66
a she	41
a she's	-45
a sheathing	23
a shed	64
a shelf	92
a shims	41
a short	89
a shower	-35
a shows	-13
a shut	-35
a side	22
a sides	38
a single	16
a sink	60
a site	-26
a six	20
a sixteen	98
a sixteenth	-19
a sixty	-16
a slabs	-13
a slope	54
a smells	-14
a smoke	22
a so	14
a sockets	-25
a some	29
a somebody	-30
a somewhere	-30
a sound	-69
a spacers	38
a spare	36
a spec	-47
a split	-15
a spout	41
a square	-62
a stacked	27
a stainless	42
a stair	-31
a stairs	-48
a stays	16
a step	-64
a stick	36
a sticks	-44
a still	-58
a stock	21
a stone	-83
a store	24
a story	-32
a straight	-47
a strapping	35
a straps	21
a street	-18
a stuck	-23
a stud	35
a studs	104
a suction	49
a sunday	-33
a supplier	-43
a supply	76
a supposed	29
a swap	-67
a sweep	38
a switch	-13
a switches	30
a t	-15
a tag	-44
a take	14
a takes	29
a tall	28
a tank	16
a tap	79
a tape	49
a tee	49
a tees	52
a tell	-34
a ten	16
a tens	31
a tested	-27
a that	-18
a that's	-20
a the	-14
a them's	-22
a then	-21
a there	87
a there's	-28
a thereabouts	-37
a they	-43
a they're	97
a thick	53
a thing	-106
a things	-111
a think	-17
a third	27
a thirteen	-15
a this	-43
a those	-75
a though	13
a threes	-82
a through	14
a thursday	-20
a tile	59
a tiles	31
a time	-25
a times	-132
a to	30
a toggle	15
a toilet	41
a told	-41
a tomorrow	-22
a tonight	14
a too	-89
a total	65
a touch	-59
a towel	40
a track	19
a trap	24
a traps	30
a travelers	-15
a tread	-72
a treads	38
a treated	-18
a trim	-17
a trimmed	13
a trips	-17
a truck	19
a tub	23
a tube	40
a tuesday	-28
a turned	-46
a turns	-26
a twenty	36
a twice	35
a two	-22
a type	21
a under	-32
a unit	-73
a units	33
a up	28
a upper	34
a uppers	-29
a upstairs	-58
a us	-98
a usb	16
a use	29
a v	-55
a valve	70
a van	68
a vent	57
a vinyl	53
a wafers	19
a wall	47
a walls	-15
a wants	19
a was	-26
a washers	42
a waste	37
a watch	-61
a water	-76
a way	-54
a ways	-86
a we're	24
a wednesday	20
a went	31
a were	26
a wet	-34
a what	-32
a when	-23
a where	27
a whether	-13
a which	80
a white	22
a whole	18
a wide	72
a windows	22
a wired	23
a with	37
a won't	-66
a wood	-16
a work	42
a works	-81
a x	55
a yet	-58
a you	-82
a you're	69
a zip	-99
above _. word	21
after _. .	-55
after _. word	-28
air _. ,	24
all _. word	46
and _. #	-32
and _. -s	79
and _. letter	29
and _. one	56
and _. unit	64
and _. word	56
and a _	38
and about _	25
and it's _	-65
and the _	15
another _. .	-28
another _. word	-13
apartment _. word	-39
are _. word	39
around _. #	-65
at $ _	-13
at _. #	-29
at _. ,	17
at _. -	46
at _. -s	53
at _. .	32
at _. Name	-33
at _. one	-33
at _. unit	24
at _. word	-33
at number _	-31
b a	-17
b about	32
b above	59
b abt	15
b actually	21
b add	82
b adhesive	70
b after	-28
b again	-14
b against	-25
b air	30
b all	-20
b allow	65
b already	28
b alright	-37
b am	-17
b amp	51
b amps	93
b an	-44
b anchors	52
b and	33
b another	-31
b anti	23
b any	-43
b anything	49
b apart	18
b apartment	-92
b apiece	40
b approximately	18
b are	99
b around	-34
b arrived	82
b as	51
b ask	-36
b asked	46
b b	13
b back	-25
b bag	30
b bags	47
b balusters	-26
b bar	82
b basement	-62
b bases	20
b basin	37
b bath	-69
b bath's	60
b bathroom	-13
b batts	-24
b bay	-57
b because	34
b bed	-91
b bedroom	-110
b been	36
b before	-43
b behind	36
b below	-23
b belts	67
b bench	30
b bent	61
b beside	21
b better	61
b between	-64
b big	-37
b billed	-68
b black	57
b blade	-24
b blinds	27
b block	-39
b bolt	32
b bolted	33
b bolts	63
b book	21
b booked	-74
b both	-65
b bottom	-62
b bought	38
b bracket	20
b brackets	101
b brass	15
b breaker	-63
b breakers	64
b bring	140
b bringing	58
b broke	33
b broken	-12
b brushed	-36
b bucket	-17
b building	-93
b burned	60
b but	49
b buy	60
b by	27
b c	59
b cabinet	-42
b call	-39
b calls	83
b came	61
b can	-39
b cap	-23
b card	20
b carpet	-48
b cartons	-21
b cat	-68
b caulk	-19
b cause	50
b cbd	13
b ceiling	14
b cell	-82
b cell's	-15
b center	84
b centres	66
b cfm	39
b change	85
b changed	66
b channel	-35
b charge	-42
b charged	-84
b check	19
b checked	-42
b circuit	-74
b class	-32
b cleaned	39
b clear	-37
b clip	39
b clips	58
b close	-44
b closet	20
b cloud	-22
b coat	-37
b code	-86
b code's	-97
b cold	57
b color	-13
b come	-81
b concrete	-14
b control	58
b copper	37
b cord	23
b cost	-65
b could	-29
b count	35
b counted	-45
b counter	-62
b cousin	-15
b cover	47
b covers	20
b crack	28
b cut	32
b cutout's	21
b cylinders	17
b dash	-17
b day	-116
b dead	45
b deck	25
b deep	66
b degrees	37
b delivery	-19
b desks	64
b detail	-68
b did	-53
b didn't	-48
b dining	-38
b do	-40
b dog	-72
b don't	-30
b door	-44
b doors	-26
b double	34
b down	60
b downspouts	17
b dozen	17
b drain	33
b drawer	-18
b drawing	39
b draws	23
b dropped	12
b dry	13
b dryer	-23
b drywall	-41
b duct	33
b dug	23
b dye	-20
b each	42
b east	-42
b edge	39
b egress	-61
b eight	72
b eighteen	31
b eighths	94
b eighty	-46
b elbows	62
b electrician	-38
b eleven	40
b em	15
b end	41
b exam	-32
b except	70
b exit	-61
b extension	-14
b extra	18
b f	23
b falls	-50
b far	64
b feet	57
b fence	16
b field	17
b fifteen	53
b fifty	16
b figure	43
b figured	-14
b fine	-47
b finish	-18
b finished	27
b fitted	-44
b five	13
b fix	-37
b flat	-37
b flue	51
b foot	32
b footers	42
b footing	32
b footing's	55
b forget	38
b forty	24
b framing	-33
b friday	-39
b fridge	22
b from	-45
b front	-72
b ft	16
b full	43
b gal	-18
b gallon	51
b gallons	75
b gang	19
b gap	41
b garage	-14
b gate	-65
b gauged	87
b gave	28
b get	100
b gets	61
b give	-47
b glass	25
b glue	96
b glued	32
b goes	-13
b going	38
b gone	42
b got	18
b gotta	33
b grab	101
b guide	-64
b guys	-69
b had	86
b half	28
b hall	-13
b handrail	13
b handrail's	22
b hangers	60
b hardware	16
b has	46
b hatch	-47
b have	80
b he	-41
b he'll	-61
b he's	-73
b header	19
b header's	68
b heat	-33
b heater	23
b heavy	-18
b held	18
b her	-63
b here	-61
b hidden	13
b high	61
b him	-62
b hinge	29
b hinges	-45
b his	-66
b hit	14
b hold	18
b holding	31
b hole	51
b hole's	34
b holes	24
b home	-26
b homeruns	-32
b hood	33
b hose	16
b hot	-41
b hour	-116
b house	13
b how	33
b humidity	46
b hundred	36
b hung	46
b i'd	-29
b i'll	24
b i'm	42
b i've	54
b if	27
b in	-24
b inch	65
b inside	51
b inspector	-37
b install	-26
b insulation	-42
b into	59
b invoice	-89
b island	54
b it's	-26
b its	40
b itself	-37
b jan	72
b joists	50
b just	81
b k	-56
b keep	-14
b key	-59
b kind	92
b kit	37
b kitchen	44
b knobs	23
b l	75
b l1	29
b label	39
b ladder	28
b lady	-59
b lags	44
b laid	40
b last	63
b lath	20
b lb	52
b leafs	-22
b leave	-13
b leaves	24
b led	55
b left	15
b leg	70
b lengths	47
b less	41
b let	49
b level	-76
b license	-18
b lid	53
b light	-15
b lights	59
b like	27
b line	57
b linen	14
b lining's	18
b list	-20
b listen	-19
b little	-63
b living	-38
b load	49
b lobby	34
b lockbox	-49
b long	-15
b longer	-32
b loop	-61
b loose	38
b lot	-126
b lounge	64
b lumber	-56
b m	-31
b main	16
b make	39
b man	-32
b marble	93
b mark	-71
b mat	-26
b mate	-51
b max	61
b maybe	33
b measure	-75
b measures	-62
b medium	63
b meter	70
b metre	15
b metres	72
b middle	-19
b mil	-14
b millimeter	13
b mirror	55
b mirror's	16
b miss	-23
b missing	52
b mix	37
b mm	82
b model	-22
b moisture	19
b mon	-78
b monday	-30
b moon	-62
b more	16
b morning	29
b mortar	28
b mounted	43
b mrs	-40
b mud	-20
b must	41
b my	-36
b myself	-38
b nail	40
b nailed	66
b need	93
b needs	52
b new	-14
b nice	-25
b niche	29
b nine	-16
b nineteen	-26
b ninety	-17
b no	53
b nobody	-84
b none	46
b nosing	-16
b not	-17
b nothing	64
b now	71
b number	-183
b number's	-51
b nuts	26
b of	15
b off	45
b office	-25
b oh	-38
b ohm	20
b ohms	41
b oil	-71
b ok	-22
b okay	-98
b old	-69
b one	-18
b one's	13
b only	99
b open	-70
b opening	55
b opening's	32
b order's	-22
b ordered	69
b other	-17
b out	13
b outlet	-32
b outlets	-13
b oven	53
b over	40
b owe	24
b owes	-47
b owner	-40
b packed	42
b paid	-37
b paint	-17
b painted	-49
b pan	-21
b panel	19
b panels	27
b pantry	-16
b paper	-65
b patch	55
b pcs	-60
b percent	21
b permit	-64
b phone	-17
b pick	91
b picked	-32
b pinned	21
b pipe	64
b pitch	-24
b place	-37
b plan	-55
b plaster	73
b plastic	-28
b plate	-23
b plates	37
b please	101
b plug	25
b plus	54
b ply	29
b po	-51
b point	43
b poly	-59
b porch	14
b post	41
b posts	-19
b pound	14
b pressure	18
b pressure's	67
b primed	-36
b primer	-17
b psi	65
b pu	30
b pulled	-48
b pulling	16
b pulls	25
b pump	35
b purchase	-22
b put	113
b qt	41
b quarter	-57
b quiet	-36
b r	-98
b rail	29
b ran	-19
b range	42
b rapid	-45
b rated	59
b rcbo	33
b read	59
b reading	77
b reads	45
b real	36
b rebuilt	55
b red	26
b ref	-25
b register	15
b rehang	16
b rental	-74
b replaced	48
b reset	29
b right	-17
b ring	-22
b ripped	31
b rise	52
b riser	-88
b rm	-79
b road	-17
b rock	56
b rod	28
b roll	17
b rolls	-64
b roof	-58
b room	-75
b rough	12
b round	-32
b route	-60
b row	-67
b rtu	-84
b rubber	-43
b run	-39
b s	23
b said	16
b same	-56
b sand	-68
b sanded	-46
b sanding	26
b sandstone	18
b saturday	-59
b saw	-58
b say	33
b saying	21
b says	34
b scale	-21
b sch	-63
b screw	25
b screwed	51
b screws	35
b seal	-51
b sealer	35
b second	16
b section	-54
b see	-33
b send	-63
b sent	76
b set	115
b seven	-34
b seventeen	25
b she	-30
b she's	-34
b shear	36
b sheet	-41
b sheets	24
b shelf	41
b shellac	29
b shelves	40
b shim	-63
b shop	-26
b short	110
b shot	57
b should	58
b shower	-65
b sides	20
b silicone	21
b sill	75
b since	-34
b sister	13
b site	-74
b six	56
b sixteen	29
b sixty	103
b slab	49
b smoke	-14
b snapped	-27
b snow	33
b so	22
b soft	34
b somebody	78
b something	-48
b sorry	49
b space	25
b spacing	41
b spare	33
b spec	59
b spring's	-15
b square	15
b squeak	62
b stain	-22
b stair	-80
b stairs	-38
b start	-37
b stat	43
b static	41
b static's	25
b steps	24
b still	22
b stock	37
b stone	72
b stop	-20
b straight	-19
b strike	29
b strip	-24
b strong	14
b stuck	23
b stud	46
b studs	36
b stuff	89
b suite	-46
b superheat	76
b supply	37
b supposed	-32
b swapped	67
b tag	-38
b take	-33
b takes	-50
b tank	-46
b temp	56
b ten	-26
b tenant	-45
b th	-39
b that	-17
b that's	-31
b their	-60
b them	36
b thermostat	64
b they're	-72
b thing	78
b think	-15
b third	27
b thirteen	114
b thirty	-40
b this	-50
b those	-24
b though	65
b three	64
b threshold	-42
b through	30
b throw	76
b thursday	-66
b ticket	-80
b tight	31
b tile	16
b tiles	44
b time	-35
b times	-57
b tip	-33
b to	40
b toast	51
b today	-36
b toilet	74
b tomorrow	-32
b too	21
b took	43
b top	-67
b total	62
b trap	43
b tray	49
b tread	-48
b treads	29
b trunk	16
b tube	52
b tubes	29
b tuesday	-14
b turn	-20
b turned	-58
b twelve	53
b twenty	16
b twice	72
b two	34
b type	-50
b under	78
b unit	-132
b up	44
b uppers	49
b upstairs	35
b us	-28
b use	-16
b used	111
b v	-37
b valve	100
b van	99
b vanity	51
b vent	24
b volts	22
b w	41
b wait	44
b walk	-35
b wall	70
b wall's	73
b walls	-34
b walnut	-59
b want	89
b wanted	61
b wants	43
b wardrobe	-22
b was	-35
b washer	32
b wax	-17
b way	-45
b we	18
b we'll	12
b we're	35
b we've	-13
b wednesday	-74
b week	-48
b well	16
b went	19
b were	-71
b wet	50
b what	20
b when	56
b where	15
b white	69
b whole	-38
b wide	66
b will	23
b window	-65
b windows	56
b wire	39
b with	48
b won't	52
b works	-20
b would	15
b x	14
b yard	-80
b yards	-15
b year	-37
b yesterday	40
b you	18
b zone	-68
back _. word	27
back at _	-39
back in _	-33
back with _	62
bare 1	-49
bare 2	54
bath _. word	-67
bay _. word	-96
be _. #	33
be _. ,	45
be _. word	29
bedroom _. word	-60
before _. #	-39
between _. word	-58
boards , _	30
book says _	13
bottom _. word	-19
bought _. word	76
bring _. 1	19
bring _. one	35
bring _. word	38
bring me _	30
buy _. .	43
buy _. word	71
by _. #	22
by _. -ed	15
by _. .	-54
by _. word	37
call it _	54
cell is _	-18
circuit _. word	-43
claims 0	18
claims 2	-33
close at _	-54
coat _. word	-65
code is _	-30
code's _. word	-68
cut _. word	48
cut me _	46
day _. .	-43
day _. word	-58
detail _. word	-35
door _. word	-61
down _. word	-43
down from _	-16
down to _	21
eighth and _	-20
every _. word	-47
except the _	-35
exit _. word	-62
feet of _	-26
fifty - _	-20
fifty _. word	-25
figures 1 l. +	42
figures 1 l. ,	81
figures 1 l. -	-19
figures 1 l. -ed	50
figures 1 l. -ing	22
figures 1 l. -s	26
figures 1 l. /	-71
figures 1 l. 1	-45
figures 1 l. :	65
figures 1 l. Name	-68
figures 1 l. letter	51
figures 1 r. )	-49
figures 1 r. ,	-30
figures 1 r. -	-36
figures 1 r. -ed	36
figures 1 r. -ing	13
figures 1 r. -s	91
figures 1 r. /	18
figures 1 r. 1	14
figures 1 r. :	-66
figures 1 r. unit	-23
figures 1 r. word	22
figures 2 l. #	34
figures 2 l. $	-63
figures 2 l. 's	62
figures 2 l. -ed	50
figures 2 l. -ing	42
figures 2 l. -ly	24
figures 2 l. -s	81
figures 2 l. .	-37
figures 2 l. /	-21
figures 2 l. :	45
figures 2 l. Name	-70
figures 2 l. letter	86
figures 2 l. one	-29
figures 2 l. unit	20
figures 2 r. #	-38
figures 2 r. ,	28
figures 2 r. -ed	17
figures 2 r. -s	23
figures 2 r. .	58
figures 2 r. /	26
figures 2 r. 1	25
figures 2 r. :	-34
figures 2 r. letter	42
figures 2 r. word	-23
figures 3 l. $	-48
figures 3 l. ,	57
figures 3 l. -	15
figures 3 l. -s	34
figures 3 l. .	46
figures 3 l. 1	-37
figures 3 l. letter	-24
figures 3 l. unit	53
figures 3 r. #	-37
figures 3 r. ,	90
figures 3 r. -	-69
figures 3 r. -s	51
figures 3 r. .	25
figures 3 r. /	-18
figures 3 r. 1	-49
figures 3 r. :	-17
figures 3 r. letter	47
figures 3 r. word	-13
figures 4 l. #	-39
figures 4 l. 's	30
figures 4 l. ,	15
figures 4 l. -	-23
figures 4 l. unit	-29
figures 4 l. word	-46
figures 4 r. #	-24
figures 4 r. ,	18
figures 4 r. letter	-33
figures 4 r. unit	-21
figures 5 l. word	-73
figures 5 r. word	-52
first _. word	-43
five _. #	-23
five _. one	-15
five by _	34
five to _	-40
flat _. ,	-49
flat _. word	-67
foot _. word	12
foot by _	24
for _. #	68
for _. -s	-56
for the _	14
for unit _	-19
form 0figures 4	-64
form figures 2	23
form figures 4	-36
form figures 5	-79
form oh	-76
form parts	65
form swallowed round	-13
forty by _	42
four _. word	-21
four one _	-23
from the _	-34
ft , _	21
gate code's _	-44
get _. #	55
get _. .	76
get _. one	25
get _. word	75
gonna be _	-62
got _. #	67
got _. -s	-32
got _. unit	50
got _. word	89
got the _	-20
grab _. word	57
had _. ,	56
had _. word	34
half and _	15
half past _	-58
has _. -s	16
have _. ,	42
have _. -s	39
have _. word	-14
he wants _	19
he's _. word	-41
header's _. one	55
here at _	-32
hole is _	28
house is _	-26
hundred by _	35
hung _. -s	17
hung _. word	21
i counted _	22
i drove _	15
i have _	37
i put _	17
i want _	13
i'm short _	22
i've got _	41
in , _	-32
in _. #	-59
in _. ,	-68
in _. -s	-47
in _. word	-13
in and _	33
in at _	44
in bed _	-61
in the _	-40
inch _. word	52
inch and _	-17
instead of _	53
is _. #	-59
is _. ,	50
is _. .	26
is _. 1	-20
is _. one	-73
is _. unit	-34
is _. word	154
is a _	46
it _. #	30
it _. -s	-52
it _. word	47
it at _	14
it needs _	27
it to _	50
it wants _	17
it was _	-23
it's _. unit	-28
it's _. word	-41
it's a _	-51
l1 	35
l1 
	-79
l1 $	-120
l1 (	19
l1 +	74
l1 ,	40
l1 -	-51
l1 .	21
l1 555	-17
l1 9	-31
l1 :	90
l1 about	18
l1 above	21
l1 add	50
l1 after	-84
l1 air	24
l1 all	68
l1 and	114
l1 another	-28
l1 apartment	-92
l1 approximately	15
l1 are	71
l1 around	-38
l1 back	23
l1 bath	-113
l1 bay	-111
l1 be	51
l1 bed	-96
l1 bedroom	-93
l1 before	-87
l1 between	-58
l1 block	-39
l1 bottom	-39
l1 bought	99
l1 breaker	-59
l1 bring	111
l1 buy	110
l1 by	28
l1 cat	-71
l1 channel	-44
l1 circuit	-52
l1 cloud	-22
l1 coat	-65
l1 code	-73
l1 code's	-79
l1 counted	38
l1 cut	93
l1 day	-92
l1 detail	-35
l1 door	-62
l1 down	29
l1 drove	15
l1 each	-65
l1 eight	-16
l1 every	-39
l1 exit	-62
l1 extension	-18
l1 fifty	-25
l1 first	-43
l1 five	-32
l1 flat	-99
l1 foot	12
l1 four	-31
l1 fourteen	-49
l1 from	-26
l1 get	160
l1 go	20
l1 good	-24
l1 got	112
l1 grab	82
l1 grade	-32
l1 had	115
l1 half	-14
l1 hall	-16
l1 has	55
l1 have	74
l1 he's	-41
l1 header's	55
l1 him	20
l1 hung	37
l1 i'm	47
l1 in	-89
l1 inch	52
l1 invoice	-79
l1 is	37
l1 it's	-56
l1 left	27
l1 level	-77
l1 like	26
l1 long	-29
l1 longer	-32
l1 lot	-86
l1 maybe	93
l1 me	14
l1 missing	-33
l1 nailed	27
l1 need	105
l1 needs	61
l1 new	-72
l1 nine	-16
l1 no	-13
l1 not	52
l1 now	99
l1 number	-191
l1 number's	-31
l1 of	-40
l1 oh	-14
l1 old	-84
l1 one	-51
l1 or	-38
l1 out	43
l1 over	57
l1 plate	39
l1 po	-47
l1 pulled	20
l1 put	79
l1 quarter	71
l1 r	-82
l1 rated	53
l1 read	66
l1 reading	54
l1 replaced	38
l1 return	15
l1 right	-51
l1 riser	-84
l1 rm	-96
l1 room	-96
l1 route	-48
l1 row	-67
l1 say	43
l1 says	64
l1 second	-27
l1 section	-54
l1 sent	38
l1 set	97
l1 seven	-13
l1 short	103
l1 so	119
l1 spec	37
l1 square	-69
l1 step	-63
l1 suite	-43
l1 superheat	51
l1 switch	-46
l1 t	22
l1 take	-106
l1 takes	-53
l1 ten	-51
l1 that	-106
l1 that's	26
l1 the	-46
l1 then	70
l1 there's	22
l1 third	-21
l1 this	-20
l1 three	-20
l1 through	41
l1 till	-64
l1 to	95
l1 tomorrow	46
l1 took	70
l1 tread	-59
l1 twenty	-23
l1 two	35
l1 type	-66
l1 under	94
l1 unit	-112
l1 up	53
l1 uppers	34
l1 use	52
l1 used	113
l1 wall	68
l1 want	66
l1 wanted	38
l1 wants	104
l1 was	37
l1 we're	27
l1 with	56
l1 x	40
l1 zone	-70
l1 £	-74
l1. #	23
l1. $	-120
l1. 's	74
l1. (	19
l1. +	74
l1. ,	40
l1. -	-51
l1. -ed	51
l1. -ing	46
l1. -ly	70
l1. -s	43
l1. .	21
l1. /	-57
l1. 1	-26
l1. :	90
l1. Name	-112
l1. letter	-14
l1. one	-78
l1. unit	-39
l1. £	-74
l2 
	26
l2 "	25
l2 '	19
l2 (	50
l2 )	15
l2 /	62
l2 1	-63
l2 10	53
l2 12	13
l2 16	26
l2 2	-45
l2 24	-29
l2 30	-34
l2 4	21
l2 5	-17
l2 555	-30
l2 6	-20
l2 60	32
l2 600	36
l2 7	-18
l2 8	19
l2 9	-31
l2 a	-145
l2 adhesive	-17
l2 an	-66
l2 and	26
l2 are	33
l2 at	-41
l2 b	-14
l2 bags	29
l2 bar	64
l2 be	87
l2 billed	-68
l2 boards	-17
l2 book	15
l2 bottom	32
l2 box	60
l2 boxes	29
l2 bring	17
l2 buy	-14
l2 by	-61
l2 call	45
l2 came	20
l2 cell	-18
l2 centres	13
l2 changed	25
l2 charged	-84
l2 clips	-12
l2 close	-54
l2 closet	-22
l2 cost	-53
l2 cut	98
l2 don't	-96
l2 done	52
l2 door	13
l2 down	15
l2 dryer	-53
l2 each	20
l2 eight	47
l2 eighth	-20
l2 elbows	14
l2 em	19
l2 end	28
l2 except	-35
l2 feet	-17
l2 fifty	-19
l2 first	50
l2 five	-12
l2 fixed	25
l2 floor	14
l2 foot	68
l2 for	-83
l2 forty	-40
l2 four	64
l2 fourteen	25
l2 friday	-49
l2 from	-92
l2 front	-50
l2 ft	51
l2 gate	-44
l2 get	-57
l2 give	-30
l2 gone	18
l2 gotta	63
l2 half	-43
l2 has	16
l2 have	63
l2 head	38
l2 here	-60
l2 high	14
l2 hole	33
l2 house	-27
l2 humidity	15
l2 hung	23
l2 i	97
l2 i'll	45
l2 i'm	44
l2 i've	44
l2 in	-45
l2 inch	54
l2 inches	68
l2 inside	31
l2 instead	53
l2 is	21
l2 island	16
l2 it	49
l2 it's	-26
l2 joists	24
l2 leg	80
l2 lengths	58
l2 make	61
l2 me	17
l2 meter	12
l2 mil	-74
l2 missing	99
l2 mm	74
l2 monday	35
l2 more	12
l2 mounted	31
l2 must	20
l2 need	51
l2 nine	-40
l2 nineteen	-38
l2 no	-112
l2 not	-45
l2 now	22
l2 number	-51
l2 oak	-19
l2 of	-124
l2 off	-45
l2 oh	-47
l2 ok	-36
l2 one	-34
l2 only	84
l2 opening	26
l2 or	39
l2 outlets	15
l2 over	25
l2 owes	-47
l2 panel	-33
l2 permit	-36
l2 pick	45
l2 picked	50
l2 piece	21
l2 pipe	58
l2 plaster	49
l2 plate	-67
l2 please	42
l2 put	67
l2 quarter	-75
l2 r	-53
l2 real	48
l2 rise	13
l2 rtu	-59
l2 sanded	-78
l2 screws	15
l2 see	-54
l2 she	13
l2 sheet	16
l2 sheets	-35
l2 shop	-44
l2 short	20
l2 should	58
l2 side	-23
l2 sill	37
l2 six	19
l2 sixteen	27
l2 sixty	16
l2 space	25
l2 static	13
l2 step	19
l2 sticks	47
l2 still	-16
l2 studs	34
l2 that	-60
l2 that's	-104
l2 the	-115
l2 there	-46
l2 they're	-19
l2 thirty	-41
l2 this	-52
l2 three	54
l2 thursday	-86
l2 tile	52
l2 to	16
l2 tomorrow	-68
l2 too	20
l2 took	-20
l2 trap	61
l2 truck	-25
l2 twelve	21
l2 twenty	66
l2 two	-37
l2 up	59
l2 wall	74
l2 want	26
l2 wants	-53
l2 was	-111
l2 water	20
l2 we	35
l2 we're	29
l2 which	23
l2 white	52
l2 will	42
l2 window	-62
l2 windows	43
l2 with	41
l2 you	-13
l2. "	25
l2. '	19
l2. 's	42
l2. (	50
l2. )	15
l2. -ly	-61
l2. -s	26
l2. /	65
l2. Name	-25
l2. letter	41
l2. n't	-48
l2. one	-30
l3 	-42
l3 
	-29
l3 "	-13
l3 #	-17
l3 (	-22
l3 )	-19
l3 ,	26
l3 .	21
l3 /	15
l3 10	-65
l3 12	28
l3 14	36
l3 16	-47
l3 20	13
l3 24	20
l3 4	12
l3 5	-17
l3 6	21
l3 7	-34
l3 8	45
l3 :	27
l3 a	89
l3 about	-22
l3 all	-65
l3 amp	18
l3 amps	40
l3 an	69
l3 and	-14
l3 apiece	40
l3 are	35
l3 at	-24
l3 bag	37
l3 bags	-16
l3 bar	-23
l3 bay	65
l3 be	-17
l3 between	-89
l3 board	-27
l3 boards	21
l3 box	15
l3 boxes	-49
l3 bring	-14
l3 but	-64
l3 buy	-43
l3 by	58
l3 call	-48
l3 came	23
l3 comes	-42
l3 coming	15
l3 did	-18
l3 doors	37
l3 down	43
l3 each	71
l3 eight	63
l3 em	12
l3 except	-36
l3 extension	18
l3 extra	-30
l3 first	-64
l3 five	20
l3 flat	27
l3 floor	12
l3 foot	14
l3 footers	36
l3 for	33
l3 forty	50
l3 four	37
l3 fridge	38
l3 from	17
l3 front	-59
l3 ft	19
l3 gal	-21
l3 glass	-15
l3 glue	26
l3 glued	22
l3 go	15
l3 gone	37
l3 good	-28
l3 got	-27
l3 had	-38
l3 half	34
l3 hall	-16
l3 hangers	18
l3 have	-39
l3 he	-41
l3 he's	-44
l3 her	-39
l3 here	28
l3 him	-56
l3 his	-15
l3 hole	31
l3 hood	36
l3 hooks	14
l3 hour	-35
l3 hundred	-33
l3 hung	41
l3 i	21
l3 i'd	26
l3 i'm	67
l3 i've	13
l3 in	-87
l3 inch	84
l3 inches	-54
l3 is	-30
l3 it	-14
l3 it's	-33
l3 k	-22
l3 knobs	18
l3 lady	-22
l3 left	-25
l3 like	46
l3 lot	-31
l3 me	30
l3 metres	22
l3 mix	30
l3 mm	-19
l3 monday	14
l3 more	78
l3 morning	-50
l3 my	-23
l3 nailed	25
l3 need	-43
l3 needs	41
l3 new	14
l3 nine	49
l3 ninety	-59
l3 no	26
l3 nobody	-85
l3 not	-19
l3 nothing	33
l3 number	-12
l3 of	31
l3 off	-28
l3 oh	39
l3 ok	-30
l3 old	86
l3 on	-29
l3 one	-50
l3 one's	-19
l3 ones	-52
l3 or	37
l3 order	-16
l3 ordered	30
l3 out	-33
l3 panel	-24
l3 patch	36
l3 permit	-27
l3 pick	26
l3 plate	18
l3 poly	15
l3 psi	14
l3 put	-46
l3 quarter	33
l3 rental	-49
l3 riser	-18
l3 run	33
l3 s	32
l3 says	34
l3 see	-55
l3 seven	-41
l3 seventy	18
l3 she	-42
l3 she's	-16
l3 shelf	25
l3 shelves	21
l3 shop	12
l3 side	81
l3 sixteen	-13
l3 slab	-13
l3 somebody	64
l3 stairs	15
l3 supposed	-15
l3 tape	-34
l3 ten	-90
l3 th	-29
l3 the	36
l3 their	-55
l3 them	60
l3 there	42
l3 there's	-16
l3 they're	-15
l3 thirteen	76
l3 this	-29
l3 three	35
l3 thursday	43
l3 tile	46
l3 till	17
l3 tomorrow	59
l3 truck	-31
l3 twelve	77
l3 two	-73
l3 under	37
l3 up	-82
l3 used	23
l3 wall	42
l3 want	36
l3 was	18
l3 we	45
l3 we're	26
l3 well	61
l3 white	87
l3 wide	39
l3 x	65
l3 you	-19
l3. "	-13
l3. #	-45
l3. 's	-42
l3. (	-22
l3. )	-19
l3. ,	26
l3. -ed	13
l3. -ing	24
l3. -ly	-62
l3. -s	28
l3. .	21
l3. /	-22
l3. 1	78
l3. :	27
l3. Name	56
l3. letter	50
l3. n't	17
l3. one	13
last _. word	23
left _. word	36
leg and _	59
lengths of _	54
letter - _	-43
letter -ed _	38
letter ._ 	71
letter ._ ,	26
letter ._ .	36
letter ._ for	-19
letter ._ in	-40
letter ._ x	33
letter _ #	71
letter _ ,	26
letter _ -s	-34
letter _ .	36
letter _ letter	36
letter _ one	-12
letter _ unit	-33
letter _ word	-61
letter word _	68
level _. word	-41
long _. word	-25
lot _. word	-47
make it _	37
make that _	29
maybe _. word	82
me _. -s	-56
me _. word	69
me at _	-18
me up _	26
missing _. -s	26
missing _. word	-48
mm , _	15
more figures 5	-48
more l. word	-45
more r. word	-21
my _. -s	-53
n't word _	-48
nailed _. word	27
need _. #	29
need _. -s	25
need _. .	54
need _. 1	41
need _. one	42
need _. unit	41
need _. word	22
need be _	16
needs _. -s	25
needs _. word	32
new _. ,	-21
new _. unit	-60
new _. word	-57
nine and _	-64
nineteen on _	-38
no , _	72
no . _	-151
no _. -s	-32
no _. word	17
not _. word	66
now _. .	23
number _. #	-17
number _. -s	-48
number _. unit	-40
number _. word	-136
number is _	-49
number's _. one	-31
of _. #	-13
of _. -s	29
of _. letter	-66
of _. one	-14
of _. word	-19
of the _	-17
off at _	-39
oh l. 's	-49
oh l. one	-13
oh l. unit	-29
oh l. word	-35
oh one _	-13
oh r. #	-12
oh r. one	-19
oh r. word	-55
old _. word	-59
on , _	21
on . _	47
on _. -s	36
on a _	77
on all _	58
on and _	13
on extension _	-18
on level _	-40
on number _	-21
on the _	-20
one 's _	-22
one , _	-55
one - _	-20
one ._ 	-94
one ._ -	-29
one ._ by	44
one ._ dash	-26
one ._ five	35
one ._ four	-20
one ._ of	45
one ._ on	-28
one ._ one	-27
one ._ three	-32
one ._ two	-12
one _ #	-94
one _ -	-29
one _ one	-34
one _. one	-21
one _. word	-30
one at _	-67
one by _	13
one in _	-44
one one _	-15
one to _	-51
one two _	-27
one unit _	39
only _. word	-15
only got _	12
only had _	15
opening is _	26
order _. #	-40
order _. .	53
order _. word	73
out _. ,	33
out _. word	18
out at _	-42
outlets and _	14
owes me _	-29
owes us _	-22
parts l. #	21
parts l. 's	40
parts l. ,	14
parts l. -ing	19
parts l. -s	-27
parts l. letter	-36
parts l. word	97
parts r. #	61
parts r. ,	-47
parts r. -s	-59
parts r. .	65
parts r. letter	-34
parts r. unit	67
parts r. word	97
past _. #	-39
past _. word	35
pick up _	45
picked up _	50
plate is _	-78
put _. unit	54
put _. word	44
put down _	87
put in _	89
quarter _. word	71
quarter and _	47
quarter past _	-30
r - _	-37
r _. unit	-40
r _. word	-49
r1 )	-35
r1 -	-59
r1 1	17
r1 10	13
r1 12	43
r1 2	53
r1 2.4	16
r1 20	17
r1 3	13
r1 4	25
r1 5	14
r1 555	-33
r1 60	19
r1 8	-13
r1 :	-94
r1 a	-45
r1 aa	36
r1 about	-19
r1 above	42
r1 across	71
r1 alder	-12
r1 along	19
r1 an	-56
r1 are	34
r1 at	21
r1 b	-23
r1 balusters	21
r1 bar	49
r1 batts	-20
r1 before	18
r1 blank	32
r1 block	16
r1 board	48
r1 boards	56
r1 bolts	15
r1 bracket	43
r1 brackets	43
r1 brass	72
r1 brick	39
r1 bucks	-182
r1 but	24
r1 by	16
r1 call	17
r1 came	20
r1 cans	25
r1 cement	-28
r1 centres	37
r1 clamps	22
r1 clear	17
r1 clips	33
r1 corner	65
r1 dash	-26
r1 dead	12
r1 deep	70
r1 dollar	-109
r1 dollars	-128
r1 doors	62
r1 double	61
r1 down	-40
r1 eight	-35
r1 eighth	-16
r1 elbows	23
r1 end	28
r1 euro	-132
r1 even	33
r1 extra	63
r1 fifties	-42
r1 fifty	-20
r1 flat	48
r1 flowing	13
r1 footings	23
r1 for	26
r1 four	-40
r1 from	20
r1 go	-92
r1 goes	-44
r1 good	41
r1 had	-71
r1 half	30
r1 hand	-70
r1 hangers	39
r1 has	-76
r1 he	-24
r1 he's	-15
r1 high	81
r1 hinge	36
r1 hinges	55
r1 hole	-126
r1 i	40
r1 i'm	-25
r1 if	-22
r1 in	13
r1 instead	37
r1 is	-106
r1 it	-31
r1 joist	16
r1 k	-83
r1 keys	-44
r1 kitchen	14
r1 knobs	28
r1 larch	-23
r1 last	-35
r1 layer	-104
r1 layers	45
r1 left	52
r1 leg	-21
r1 long	97
r1 loose	17
r1 man	-42
r1 max	30
r1 more	85
r1 new	70
r1 nine	13
r1 ninety	-47
r1 no	16
r1 nos	50
r1 not	-13
r1 nothing	-60
r1 now	13
r1 number	49
r1 o'clock	-110
r1 oc	50
r1 off	67
r1 old	21
r1 one	18
r1 or	-22
r1 out	-27
r1 outlets	41
r1 outside	24
r1 over	-28
r1 panel	-129
r1 panels	22
r1 part	-69
r1 pickets	58
r1 plate	46
r1 please	15
r1 pm	-52
r1 post	22
r1 posts	31
r1 pulls	39
r1 quarter	-54
r1 quid	-58
r1 reducer	30
r1 rough	18
r1 runs	75
r1 s	15
r1 says	-54
r1 screw	14
r1 screws	74
r1 second	-79
r1 seven	-23
r1 sheets	14
r1 shelf	49
r1 shelves	28
r1 shims	15
r1 short	27
r1 smoke	40
r1 so	29
r1 spare	51
r1 stainless	28
r1 still	30
r1 straps	30
r1 studs	53
r1 tall	25
r1 ten	44
r1 that	-53
r1 that's	-18
r1 the	-31
r1 then	13
r1 thick	45
r1 thing	-30
r1 things	-97
r1 this	-36
r1 thursday	-23
r1 tile	80
r1 tiles	21
r1 times	-132
r1 today	-45
r1 toilet	59
r1 tomorrow	-72
r1 total	47
r1 treads	94
r1 tub	-17
r1 twenty	14
r1 unopened	14
r1 used	40
r1 wall	15
r1 wants	-62
r1 was	-99
r1 washers	12
r1 wax	37
r1 way	-93
r1 ways	-86
r1 we	-40
r1 when	27
r1 which	17
r1 white	45
r1 wide	76
r1 windows	29
r1 wire	28
r1 x	28
r1. 's	13
r1. )	-35
r1. -	-59
r1. -ing	31
r1. -ly	20
r1. -s	39
r1. 1	34
r1. :	-94
r1. Name	-32
r1. letter	15
r1. n't	-75
r1. one	-34
r1. word	22
r2 
	25
r2 "	33
r2 (	-35
r2 +	14
r2 ,	12
r2 .	16
r2 /	-54
r2 0142	-32
r2 1	31
r2 10	38
r2 100	74
r2 12	96
r2 14	-35
r2 15	50
r2 16	15
r2 2	-33
r2 20	-48
r2 30	-24
r2 34	-40
r2 35	48
r2 6	40
r2 7	-62
r2 8	30
r2 :	-78
r2 a	-61
r2 about	-50
r2 already	19
r2 also	-60
r2 and	26
r2 are	71
r2 ask	66
r2 back	-46
r2 bases	13
r2 bath	-24
r2 be	18
r2 bedroom	-25
r2 been	-16
r2 behind	18
r2 bolt	23
r2 bolts	28
r2 boxes	25
r2 brackets	-30
r2 bring	19
r2 broken	16
r2 but	16
r2 buy	34
r2 by	-18
r2 c	-48
r2 call	-13
r2 came	-50
r2 cap	49
r2 caps	21
r2 center	66
r2 changed	24
r2 close	45
r2 come	-63
r2 cut	47
r2 dead	-23
r2 do	50
r2 don't	-14
r2 doors	-73
r2 down	-72
r2 each	47
r2 eighteen	-28
r2 eighty	-40
r2 eleven	-42
r2 em	84
r2 end	20
r2 epoxy	-41
r2 every	32
r2 filter	31
r2 filters	35
r2 fine	49
r2 five	-61
r2 foot	-21
r2 footers	32
r2 for	25
r2 forty	57
r2 fourteen	27
r2 from	-30
r2 gal	13
r2 gallon	-36
r2 gang	-33
r2 get	-13
r2 glued	22
r2 go	23
r2 got	68
r2 grade	49
r2 had	30
r2 half	24
r2 hang	14
r2 hangers	33
r2 happy	27
r2 have	-35
r2 he	-33
r2 he's	-20
r2 him	17
r2 hour	-56
r2 hundred	27
r2 hung	43
r2 i	19
r2 i'll	51
r2 if	-21
r2 in	36
r2 inch	67
r2 is	53
r2 it	35
r2 it's	-22
r2 kitchen	20
r2 latch	31
r2 left	21
r2 lift	-45
r2 like	-30
r2 lime	46
r2 lines	22
r2 me	-39
r2 monday	-58
r2 morning	-36
r2 my	13
r2 need	-21
r2 night	-75
r2 nine	-49
r2 ninety	98
r2 no	25
r2 not	41
r2 now	46
r2 number	-18
r2 nuts	52
r2 of	40
r2 oh	-66
r2 old	29
r2 on	52
r2 one	-73
r2 only	12
r2 open	-46
r2 order	-35
r2 over	15
r2 panel	15
r2 pins	15
r2 plaster	63
r2 plate	17
r2 plates	42
r2 please	17
r2 plus	20
r2 pop	-38
r2 primer	104
r2 put	34
r2 quarter	40
r2 return	38
r2 ring	60
r2 run	-17
r2 same	22
r2 sand	24
r2 says	-23
r2 screws	-23
r2 set	-57
r2 seven	-43
r2 seventy	18
r2 she	12
r2 she's	49
r2 sheet	20
r2 sheets	-17
r2 short	39
r2 shower	-53
r2 six	13
r2 sixteen	51
r2 so	-34
r2 somebody	26
r2 somewhere	-45
r2 still	-46
r2 street	-25
r2 supposed	34
r2 switch	-17
r2 that	-78
r2 them's	-22
r2 there	23
r2 there's	-50
r2 they	-39
r2 they're	59
r2 thing	-79
r2 thirty	13
r2 this	15
r2 those	-88
r2 three	-46
r2 thursday	-36
r2 tile	17
r2 time	-34
r2 to	-29
r2 today	18
r2 tomorrow	-42
r2 treads	-22
r2 trips	-30
r2 truck	21
r2 tub	41
r2 twenty	85
r2 two	14
r2 under	23
r2 up	-42
r2 us	-98
r2 used	23
r2 wall	-14
r2 want	36
r2 wants	-13
r2 was	51
r2 way	-18
r2 we	-19
r2 we're	-27
r2 were	15
r2 window	-19
r2 with	14
r2 work	20
r2 x	44
r2 you	-22
r2. "	33
r2. (	-35
r2. +	14
r2. ,	12
r2. -s	46
r2. .	16
r2. :	-78
r2. Name	-103
r2. letter	45
r2. one	-14
r2. unit	52
r3 "	-32
r3 '	-59
r3 )	-22
r3 +	27
r3 -	-31
r3 /	22
r3 1	30
r3 12	30
r3 14	-26
r3 2	-14
r3 24	42
r3 3	36
r3 4	-24
r3 5	81
r3 7	14
r3 8	44
r3 :	-40
r3 ;	-23
r3 air	72
r3 and	36
r3 another	21
r3 ask	-27
r3 at	21
r3 bag	-24
r3 bags	15
r3 base	-32
r3 be	22
r3 before	-49
r3 behind	58
r3 bit	34
r3 boards	49
r3 box	35
r3 bracket	58
r3 brackets	-69
r3 broken	28
r3 bulbs	37
r3 by	-29
r3 cabinet	-16
r3 closet	30
r3 cold	16
r3 color	-47
r3 coming	-36
r3 corner	-18
r3 couplings	19
r3 cover	41
r3 crack	-17
r3 crew	-58
r3 did	-21
r3 do	-31
r3 door's	53
r3 drawer	-48
r3 each	-22
r3 edge	19
r3 eight	48
r3 eighteen	-22
r3 em	-16
r3 end	-52
r3 fan	48
r3 feet	27
r3 fifty	15
r3 filter	-12
r3 five	-36
r3 floor	31
r3 footers	27
r3 for	-51
r3 forty	45
r3 four	36
r3 fourteen	32
r3 from	-64
r3 ft	-24
r3 gang	69
r3 gap	60
r3 gets	16
r3 glass	15
r3 go	58
r3 goes	47
r3 good	-42
r3 got	56
r3 gotta	18
r3 half	-22
r3 hall	-47
r3 has	17
r3 have	42
r3 he	-37
r3 he's	-33
r3 head	33
r3 her	47
r3 hinge	68
r3 hot	-18
r3 hour	15
r3 hums	-30
r3 hundred	-31
r3 hung	13
r3 i'll	-51
r3 i'm	-39
r3 if	-18
r3 in	-49
r3 is	-120
r3 it's	44
r3 joist	19
r3 kit	24
r3 kitchen	24
r3 last	-28
r3 left	95
r3 leg	51
r3 legs	24
r3 lid	30
r3 like	-26
r3 little	12
r3 lock	17
r3 lot	-55
r3 meter	19
r3 missing	-61
r3 monday	-26
r3 more	-14
r3 morning	-47
r3 move	18
r3 need	53
r3 needs	13
r3 new	-47
r3 nine	21
r3 no	-34
r3 not	41
r3 now	-56
r3 of	42
r3 office	-38
r3 oh	-15
r3 on	28
r3 one's	17
r3 other	38
r3 out	95
r3 over	-12
r3 paint	37
r3 panel	33
r3 panels	66
r3 pavers	19
r3 pine	38
r3 plate	29
r3 porch	-52
r3 posts	14
r3 quarter	29
r3 quit	-20
r3 ran	70
r3 range	-41
r3 ring	36
r3 room	-48
r3 round	-25
r3 says	36
r3 screws	25
r3 seal	19
r3 second	-37
r3 seven	-23
r3 seventy	57
r3 she's	-31
r3 short	42
r3 six	-32
r3 sixteen	37
r3 so	-51
r3 spare	29
r3 stair	-15
r3 sticks	-41
r3 still	-56
r3 stone	-55
r3 store	19
r3 stripped	26
r3 studs	36
r3 supplier	-25
r3 supply	19
r3 tag	-36
r3 tap	63
r3 ten	-55
r3 tens	21
r3 that's	23
r3 then	18
r3 there	56
r3 there's	13
r3 they	-13
r3 they're	20
r3 thing	-34
r3 thirty	-24
r3 those	21
r3 thursday	15
r3 tile	-22
r3 time	-36
r3 told	-21
r3 took	49
r3 tread	-72
r3 truck	-21
r3 tubes	18
r3 twenty	19
r3 up	18
r3 use	71
r3 used	-52
r3 vanity	15
r3 want	25
r3 wants	69
r3 water	-18
r3 we	45
r3 we're	27
r3 white	-65
r3 will	14
r3 with	-23
r3 x	34
r3 you	14
r3. "	-32
r3. '	-59
r3. 's	22
r3. )	-22
r3. +	27
r3. -	-31
r3. -ed	67
r3. -ing	-38
r3. 1	48
r3. :	-40
r3. ;	-23
r3. Name	-15
r3. letter	26
r3. n't	-46
r3. one	22
r3. word	-20
rated _. .	22
read _. word	37
reading _. word	49
reads _. word	44
right _. word	-23
ring and _	19
rm _. word	-35
room _. word	-69
route _. word	-48
rtu - _	-59
rule 	-55
rule eachOf	94
rule pair	180
rule quantity/decimal	60
rule quantity/whole+taken-back	22
rule range	60
says _. word	51
second _. word	-17
sent _. word	38
set _. word	57
set at _	-58
sheets of _	-36
short _. word	66
should be _	58
six and _	-35
six by _	32
sixteen by _	27
size 0	13
size 1	-19
size 60	28
size 99	47
size 9999	-31
size more	-51
so _. word	75
so bring _	21
so buy _	22
so get _	47
so grab _	35
space is _	25
square _. #	-31
square _. word	-42
step _. word	-25
suite _. word	-25
superheat _. ,	51
supply air _	24
swallowed l. 's	65
swallowed l. unit	-52
swallowed l. word	-53
swallowed r. one	28
swallowed r. word	17
swallowed round l. 's	87
swallowed round l. -s	17
swallowed round l. one	-25
swallowed round l. word	-15
swallowed round r. #	65
swallowed round r. -s	21
swallowed round r. unit	-23
swallowed round r. word	-59
take _. word	-62
ten to _	-53
that _. -s	-48
that _. word	-61
that's _. -s	60
that's _. word	31
that's a _	25
the _. #	31
the _. -s	52
the _. one	-29
the _. unit	-58
the _. word	-63
the bottom _	-38
the first _	-43
the last _	55
the left _	-78
the new _	-37
the number _	-20
the old _	-44
the other _	39
the right _	-51
there by _	-75
there is _	46
there's _. -s	-27
there's _. word	16
they want _	-53
third _. word	-21
thirty by _	16
this _. word	-32
those _. word	-15
till _. word	-90
to _. #	72
to _. ,	22
to _. .	39
to _. word	26
to about _	-42
to be _	23
to square _	-47
today , _	32
took _. -s	70
took _. word	22
tread _. word	-49
twenty _. word	-23
twenty by _	17
twenty two _	31
two _. one	34
two _. word	45
two by _	63
type _. word	-53
under _. word	41
unit 's _	27
unit + _	32
unit -ed _	-43
unit -ly _	46
unit -s _	42
unit . _	-21
unit ._ 
	50
unit ._ ,	-40
unit ._ -	-30
unit ._ and	65
unit ._ by	-28
unit ._ of	66
unit ._ on	-35
unit ._ the	-27
unit ._ to	-13
unit ._ with	-22
unit ._ x	32
unit 1 _	32
unit _ ,	-40
unit _ -	-30
unit _ -s	-25
unit _ /	50
unit _ one	-25
unit _. word	-65
unit word _	-18
units 0	-74
units 1	61
units 2	21
up _. word	39
up at _	46
up to _	48
uppers _. word	34
us _. -s	-54
used _. -s	23
used _. word	67
want _. .	23
want _. word	28
wanted _. word	38
wants _. #	21
wants _. ,	24
wants _. word	49
was _. ,	53
was _. -s	-19
was _. one	-42
was _. word	37
we have _	13
we set _	22
we used _	23
which is _	38
with _. -s	41
with _. letter	12
with _. word	29
word $ _	-80
word 's _	56
word ( _	61
word + _	25
word , _	51
word - _	-44
word -ing _	12
word -s _	32
word ._ .	31
word ._ 1	20
word ._ 2	28
word ._ 20	17
word ._ 4	43
word ._ 555	-23
word ._ :	-58
word ._ a	-20
word ._ about	-13
word ._ above	28
word ._ across	45
word ._ and	-15
word ._ are	30
word ._ at	28
word ._ balusters	21
word ._ bar	49
word ._ block	-14
word ._ board	48
word ._ boards	21
word ._ bolts	14
word ._ brackets	35
word ._ brass	72
word ._ brick	39
word ._ bucks	-145
word ._ by	44
word ._ came	20
word ._ cement	-28
word ._ centres	37
word ._ clamps	16
word ._ clips	13
word ._ deep	49
word ._ dollars	-84
word ._ doors	44
word ._ down	-40
word ._ eight	-44
word ._ eighth	-16
word ._ euro	-107
word ._ even	33
word ._ extra	60
word ._ fifties	-42
word ._ fifty	-28
word ._ five	-40
word ._ flat	48
word ._ goes	-44
word ._ good	50
word ._ had	-71
word ._ half	29
word ._ hand	-70
word ._ hangers	27
word ._ has	-72
word ._ he	-24
word ._ high	21
word ._ hinge	36
word ._ hinges	38
word ._ hole	-83
word ._ i	51
word ._ i'm	-15
word ._ if	-19
word ._ is	-77
word ._ kitchen	-19
word ._ knobs	17
word ._ larch	-23
word ._ last	-35
word ._ left	41
word ._ leg	-38
word ._ long	48
word ._ more	112
word ._ new	30
word ._ nine	21
word ._ no	-18
word ._ nothing	-45
word ._ now	-15
word ._ number	49
word ._ o'clock	-60
word ._ of	-20
word ._ old	21
word ._ on	34
word ._ one	17
word ._ out	-19
word ._ over	-28
word ._ panel	-118
word ._ part	-41
word ._ post	20
word ._ quid	-48
word ._ rough	18
word ._ says	-33
word ._ screw	13
word ._ second	-62
word ._ shelf	24
word ._ so	14
word ._ spare	40
word ._ studs	53
word ._ tall	25
word ._ ten	23
word ._ that	-45
word ._ that's	-18
word ._ the	-30
word ._ then	13
word ._ thing	-16
word ._ things	-50
word ._ this	-36
word ._ thursday	-23
word ._ tile	38
word ._ times	-94
word ._ today	-45
word ._ tomorrow	-62
word ._ up	26
word ._ wants	-52
word ._ was	-77
word ._ wax	30
word ._ we	-28
word ._ when	-25
word ._ which	12
word ._ white	30
word ._ wide	43
word ._ windows	28
word ._ with	20
word ._ x	-50
word / _	-50
word 1 _	-18
word : _	38
word Name _	-94
word _ 's	13
word _ -ing	17
word _ -s	18
word _ .	31
word _ 1	41
word _ :	-58
word _ Name	-27
word _ n't	-62
word _ one	-14
word _ word	-15
word letter _	-35
word one _	-61
words l. #	42
words l. 's	22
words l. -ed	20
words l. -ing	-19
words l. -s	-18
words l. .	49
words l. :	-15
words l. letter	-73
words l. one	-75
words l. unit	-34
words r. 's	20
words r. ,	-16
words r. -ed	-22
words r. .	-81
words r. /	15
words r. 1	102
words r. Name	-32
words r. letter	27
words r. n't	-52
words r. one	-28
words r. unit	33
words r. word	14
words round l. #	26
words round l. 's	-22
words round l. ,	-32
words round l. -	-20
words round l. -s	44
words round l. one	-23
words round l. unit	-22
words round l. word	30
words round r. #	54
words round r. 's	-14
words round r. ,	30
words round r. one	-112
words round r. word	13
x _. #	48
x _. ,	26
x _. .	19
x _. unit	14
x _. word	-29
zone _. word	-37
`;
