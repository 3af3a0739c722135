/** Written by tests/learn/counts.ts: something seen of a number, and hundredths for its counting or measuring. */
export const COUNTING = `

 - _	65

 _. .	-90
 _. #	72
 _. ,	21
 _. -	38
 _. -ing	35
 _. .	-117
 _. 1	21
 _. letter	31
 a _	-51
 about _	73
 bath _	-37
 bring _	64
 catch _	-25
 circuit _	-43
 cut _	44
 exit _	-36
 flat _	-55
 from _	75
 got _	107
 grab _	41
 half _	-22
 he's _	-94
 house _	-29
 hung _	67
 item _	-50
 job _	-25
 leave _	36
 lot _	-22
 need _	147
 no _	-47
 on _	-33
 ordered _	22
 pulled _	37
 put _	46
 r _	-46
 rack _	-29
 ran _	73
 rfi _	-23
 rm _	-30
 room _	-21
 sheet _	-38
 six _	42
 static's _	40
 step _	-23
 suite _	-36
 take _	49
 the _	24
 there's _	-23
 they're _	-23
 took _	117
 truck _	-38
 two _	58
 unit _	-46
 used _	53
 vanity _	36
 what _	-51
" - _	54
" head none	-40
# 's _	-21
# -ed _	61
# -ing _	-36
# -s _	72
# ._ 	72
# ._ ,	21
# ._ -	36
# ._ .	-117
# ._ a	-41
# ._ at	40
# ._ bag	45
# ._ between	90
# ._ by	-54
# ._ chance	-38
# ._ dollars	-38
# ._ doors	54
# ._ fifty	53
# ._ in	45
# ._ kinds	-54
# ._ late	-28
# ._ left	81
# ._ more	-69
# ._ notice	-33
# ._ on	108
# ._ or	-33
# ._ outlets	57
# ._ over	28
# ._ past	-45
# ._ per	75
# ._ plus	22
# ._ ring	-53
# ._ screws	72
# ._ seven	-35
# ._ static	29
# ._ to	88
# ._ twenty	73
# ._ two	23
# ._ way	-48
# ._ wire	56
# ._ wrongs	-38
# ._ x	25
# _ #	72
# _ ,	21
# _ -	36
# _ -ing	35
# _ .	-117
# _ 1	21
# _ letter	31
# head 1	31
# head 2	88
# letter _	-46
# one _	74
# unit _	-79
# word _	-44
\$ ._ 	-23
\$ ._ ,	-23
\$ ._ .	-36
\$ _ #	-23
\$ _ ,	-23
\$ _ .	-36
\$ _ word	-29
\$ _. #	-23
\$ _. ,	-23
\$ _. .	-36
\$ _. word	-29
\$ head none	-82
% 12	111
% 2	49
% 5	-74
% 60	74
% 99	44
% 999	-123
's -ing _	87
's ._ ,	52
's ._ .	43
's ._ across	44
's ._ all	23
's ._ and	23
's ._ at	99
's ._ by	67
's ._ down	38
's ._ high	61
's ._ in	35
's ._ left	41
's ._ long	34
's ._ low	22
's ._ of	-57
's ._ off	46
's ._ out	41
's ._ short	32
's ._ to	-61
's ._ too	24
's _ ,	52
's _ .	43
's _ one	-26
's _ word	20
's head 1	-59
's head none	36
's unit _	-78
( ._ )	37
( _ )	37
( _ word	49
( _. )	37
( _. word	49
( word _	39
) , _	48
+ _ -s	20
+ _ word	41
+ _. -s	20
+ _. word	41
+ head 0	20
+ head none	27
, \$ _	-47
, 's _	53
, -ing _	23
, -s _	-64
, ._ 	46
, ._ -	-37
, ._ ;	21
, ._ and	41
, ._ below	28
, ._ deep	24
, ._ high	-32
, ._ left	43
, ._ of	120
, ._ out	-29
, _ #	46
, _ -	-37
, _ -ed	62
, _ 1	31
, _ ;	21
, _ letter	24
, _ unit	28
, _. #	46
, _. -	-37
, _. -ed	62
, _. 1	31
, _. ;	21
, _. letter	24
, _. unit	28
, a _	47
, all _	46
, and _	60
, bring _	25
, buy _	27
, cut _	27
, day _	-54
, get _	50
, have _	37
, head 1	80
, head 2	-44
, head none	25
, need _	64
, needs _	54
, now _	31
, order _	136
, so _	24
, the _	27
, unit _	-33
, want _	-62
, wants _	27
, word _	40
- ._ 	-35
- ._ ,	-33
- _ #	-35
- _ ,	-33
- _. #	-35
- _. ,	-33
- get _	33
- head 1	41
- head none	-45
-ed , _	83
-ed ._ ,	39
-ed ._ .	49
-ed ._ from	39
-ed ._ of	41
-ed ._ on	-58
-ed ._ times	-64
-ed _ ,	39
-ed _ -s	21
-ed _ .	49
-ed _ letter	-23
-ed head 0	21
-ed head 1	39
-ed one _	-35
-ed unit _	63
-ed word _	31
-ing , _	38
-ing -s _	-38
-ing ._ 	52
-ing ._ ,	21
-ing ._ .	20
-ing ._ and	23
-ing ._ more	-43
-ing ._ on	-52
-ing _ #	52
-ing _ ,	21
-ing _ -s	28
-ing _ .	20
-ing _ letter	-25
-ing _ word	32
-ing head 0	28
-ing word _	54
-ly _ word	34
-ly head none	60
-ly word _	-22
-s , _	23
-s . _	53
-s ._ 	51
-s ._ ,	83
-s ._ .	80
-s ._ a	31
-s ._ and	-25
-s ._ at	48
-s ._ by	27
-s ._ from	22
-s ._ more	23
-s ._ of	-52
-s ._ off	26
-s ._ the	-50
-s ._ to	-56
-s ._ windows	22
-s ._ x	-84
-s : _	33
-s _ #	51
-s _ ,	83
-s _ -ed	38
-s _ -ing	-25
-s _ .	80
-s _ 1	24
-s _ letter	-94
-s _ one	-50
-s _ unit	21
-s _ word	37
-s head 1	67
-s word _	33
. \$ _	-35
. 's _	25
. -ed _	52
. -s _	32
. ._ )	-56
. ._ of	-43
. _ )	-56
. _. )	-56
. bath _	-50
. bring _	29
. buy _	25
. get _	71
. have _	54
. head 1	22
. order _	122
. short _	22
. used _	31
/ - _	80
/ ._ .	-52
/ 1 _	28
/ _ .	-52
/ head none	-55
0 l 	-62
0 l. #	-62
0 l. word	58
0 r 	-60
0 r. #	-60
0 words	30
0 words round	-41
0figures 4 l. -	-34
1 " _	-40
1 , _	-64
1 - _	-21
1 -s _	42
1 . _	37
1 ._ x	32
1 / _	22
1 1 _	-78
1 : _	24
1 @ _	23
1 _ -s	22
1 _ 1	-77
1 _ letter	32
1 figures 1	57
1 head 0	22
1 head none	-33
1 l 	32
1 l 
	-25
1 l ,	45
1 l -	22
1 l .	31
1 l a	29
1 l about	-30
1 l add	36
1 l and	65
1 l another	-112
1 l are	25
1 l as	-100
1 l at	44
1 l bath	-55
1 l be	31
1 l bottom	-68
1 l bring	73
1 l but	-29
1 l buy	73
1 l by	-71
1 l cut	34
1 l down	37
1 l drops	36
1 l every	-100
1 l feet	-72
1 l five	-52
1 l from	30
1 l gap	33
1 l get	99
1 l good	-22
1 l got	29
1 l grab	68
1 l have	28
1 l he's	-22
1 l him	-28
1 l i'm	50
1 l is	-23
1 l it	53
1 l it's	-22
1 l last	-116
1 l leave	27
1 l left	-44
1 l like	44
1 l long	-46
1 l low	24
1 l maybe	32
1 l me	82
1 l missing	-40
1 l mm	-60
1 l need	69
1 l new	-70
1 l no	-130
1 l not	-113
1 l old	-72
1 l only	-28
1 l order	41
1 l other	-136
1 l plumb	30
1 l plus	47
1 l proud	26
1 l put	74
1 l right	-58
1 l second	-50
1 l short	54
1 l six	-40
1 l so	23
1 l still	39
1 l strong	65
1 l take	-69
1 l that	-118
1 l the	-150
1 l there's	75
1 l this	-59
1 l through	-21
1 l type	-29
1 l up	64
1 l was	94
1 l weighs	-99
1 l what	-59
1 l within	70
1 l wrong	-37
1 l. #	32
1 l. 's	38
1 l. ,	45
1 l. -	22
1 l. -ing	-62
1 l. .	31
1 l. /	-23
1 l. word	-35
1 letter _	75
1 parts	25
1 r 
	24
1 r -	-47
1 r ;	-40
1 r a	28
1 r all	51
1 r at	-26
1 r before	-73
1 r behind	-70
1 r between	84
1 r bit	61
1 r bracket	36
1 r bubble	-92
1 r but	-46
1 r can	30
1 r door	48
1 r down	-38
1 r end	-29
1 r from	-27
1 r gap	45
1 r hand	-75
1 r has	-50
1 r he	-31
1 r here	37
1 r i	-23
1 r is	-122
1 r it's	-29
1 r kitchen	43
1 r left	-26
1 r low	48
1 r new	67
1 r nine	35
1 r now	-64
1 r of	-162
1 r off	22
1 r on	-35
1 r over	32
1 r panel	-85
1 r past	-38
1 r pipe	27
1 r proud	44
1 r round	-95
1 r short	40
1 r shy	26
1 r so	-28
1 r spacer	42
1 r spare	38
1 r that's	-25
1 r they	-30
1 r thing	-25
1 r tile	-35
1 r to	-103
1 r too	26
1 r turn	-112
1 r two	-30
1 r up	23
1 r wednesday	47
1 r white	30
1 r with	-60
1 r x	25
1 r. 's	-56
1 r. -	-47
1 r. -ing	73
1 r. -s	-84
1 r. /	25
1 r. 1	64
1 r. ;	-40
1 r. Name	30
1 r. one	53
1 r. unit	29
1 unit _	41
1 word _	30
1 words	-52
12 l 
	-28
12 l -	42
12 l :	61
12 l after	-39
12 l all	103
12 l and	51
12 l another	42
12 l at	-87
12 l before	-77
12 l between	-57
12 l bottom	30
12 l by	84
12 l chapter	-23
12 l circuit	-74
12 l cut	20
12 l detail	-33
12 l door	-65
12 l eight	35
12 l every	40
12 l exit	-42
12 l flat	-48
12 l floor	-61
12 l four	-23
12 l garage	78
12 l got	74
12 l grab	36
12 l had	63
12 l half	-68
12 l hole	-28
12 l house	-62
12 l hung	68
12 l in	-29
12 l is	-50
12 l it	88
12 l it's	-30
12 l its	-53
12 l last	50
12 l like	-34
12 l line	-45
12 l maybe	46
12 l me	27
12 l need	83
12 l number	-108
12 l of	22
12 l on	-26
12 l only	26
12 l over	34
12 l page	-42
12 l past	-54
12 l port	-33
12 l put	-23
12 l riser	-41
12 l room	-36
12 l route	-35
12 l said	23
12 l saves	-42
12 l set	-38
12 l six	32
12 l so	26
12 l take	94
12 l that's	38
12 l the	31
12 l then	-40
12 l there's	46
12 l three	38
12 l to	-41
12 l tomorrow	56
12 l took	55
12 l unit	-70
12 l up	41
12 l used	63
12 l want	22
12 l wants	22
12 l was	-66
12 l whole	-59
12 l with	26
12 l x	44
12 l. -	42
12 l. -ed	34
12 l. -ing	43
12 l. -s	56
12 l. :	61
12 l. Name	-39
12 l. unit	-21
12 parts	24
12 r :	-49
12 r a	35
12 r and	36
12 r at	26
12 r behind	-81
12 r boards	26
12 r bucks	-50
12 r by	121
12 r deep	34
12 r doors	52
12 r fifty	-50
12 r for	53
12 r four	-20
12 r got	-39
12 r hangers	40
12 r i	40
12 r in	-65
12 r it	-22
12 r left	106
12 r loose	26
12 r nine	26
12 r notice	-33
12 r o'clock	-46
12 r of	91
12 r off	-34
12 r out	-24
12 r over	21
12 r screws	-25
12 r sharp	-57
12 r shelf	24
12 r six	-33
12 r so	35
12 r studs	33
12 r this	-42
12 r times	-51
12 r to	28
12 r tomorrow	-30
12 r under	-48
12 r used	32
12 r was	-41
12 r waste	22
12 r with	63
12 r x	50
12 r. 's	45
12 r. -s	68
12 r. 1	31
12 r. :	-49
12 r. Name	-47
12 r. letter	65
12 r. one	-40
12 words round	-26
16 x _	30
2 and _	27
2 l 	27
2 l 
	-22
2 l -	-54
2 l about	29
2 l and	-24
2 l another	57
2 l at	-74
2 l back	62
2 l bath	-57
2 l bay	-56
2 l be	35
2 l bed	-34
2 l bedroom	-67
2 l bring	62
2 l buy	42
2 l by	-33
2 l day	-53
2 l down	-55
2 l drove	-28
2 l for	-21
2 l got	-43
2 l have	27
2 l header's	61
2 l me	-25
2 l need	83
2 l no	41
2 l number	-44
2 l of	-35
2 l on	28
2 l out	-32
2 l over	44
2 l p	-20
2 l put	30
2 l so	47
2 l t	-42
2 l takes	-49
2 l the	106
2 l there's	-46
2 l took	58
2 l two	43
2 l up	44
2 l us	-82
2 l used	25
2 l wants	30
2 l with	52
2 l y	28
2 l. #	27
2 l. 's	27
2 l. -	-54
2 l. -ing	22
2 l. -s	-26
2 l. /	-22
2 l. 1	26
2 l. word	28
2 parts	36
2 r 	-22
2 r 
	37
2 r 3	-40
2 r :	-22
2 r a	-35
2 r at	26
2 r behind	54
2 r brackets	21
2 r can	-68
2 r cents	-33
2 r clamps	20
2 r couplings	43
2 r doors	57
2 r eight	-61
2 r elbows	24
2 r end	61
2 r for	55
2 r had	-49
2 r half	52
2 r in	30
2 r left	58
2 r more	64
2 r no	51
2 r of	159
2 r one	-43
2 r part	-83
2 r screws	58
2 r spare	22
2 r the	-58
2 r times	-34
2 r to	-63
2 r two	72
2 r wrongs	-38
2 r. #	-22
2 r. -ed	-22
2 r. -s	24
2 r. /	37
2 r. :	-22
2 r. one	72
2 r. unit	-30
2 x _	24
20 figures 2	34
20 l ,	69
20 l @	27
20 l a	22
20 l and	32
20 l at	-31
20 l by	71
20 l cut	25
20 l down	56
20 l every	61
20 l for	-30
20 l maybe	21
20 l one	21
20 l out	31
20 l over	-46
20 l r	-38
20 l reads	-35
20 l says	27
20 l set	59
20 l side	63
20 l so	45
20 l that's	-29
20 l the	-28
20 l to	49
20 l two	32
20 l under	37
20 l unit	-20
20 l. ,	69
20 l. -ed	-43
20 l. -ing	62
20 l. 1	21
20 l. @	27
20 l. letter	-28
20 l. one	40
20 l. unit	22
20 parts	28
20 r -	-23
20 r .	61
20 r @	25
20 r and	24
20 r at	27
20 r before	27
20 r bucks	-37
20 r by	80
20 r i	48
20 r is	67
20 r joist	30
20 r ninety	-42
20 r oc	47
20 r second	-45
20 r to	125
20 r twenty	-27
20 r two	-74
20 r x	20
20 r. -	-23
20 r. -ed	-21
20 r. -s	50
20 r. .	61
20 r. 1	28
20 r. @	25
20 r. one	-136
20 r. unit	26
20 r. word	64
20 words round	-37
4 - _	36
5 l 	29
5 l ,	58
5 l -	31
5 l .	46
5 l 1	-24
5 l 4	24
5 l about	-45
5 l after	-51
5 l all	-21
5 l and	27
5 l another	72
5 l apartment	-24
5 l at	-132
5 l be	62
5 l by	-36
5 l channel	-30
5 l day	-52
5 l dock	-41
5 l every	23
5 l flat	-58
5 l get	68
5 l got	47
5 l has	35
5 l have	65
5 l last	68
5 l left	66
5 l level	-41
5 l like	28
5 l loop	-44
5 l lvl	-43
5 l maybe	38
5 l need	23
5 l needs	46
5 l note	-43
5 l number	-45
5 l only	88
5 l or	26
5 l over	76
5 l put	58
5 l room	-44
5 l shelf	-28
5 l short	88
5 l so	21
5 l switch	-31
5 l that	40
5 l that's	21
5 l till	-52
5 l to	-46
5 l took	29
5 l two	-54
5 l unit	-43
5 l up	59
5 l use	46
5 l used	49
5 l wall	34
5 l wants	20
5 l x	27
5 l zone	-41
5 l. 's	-45
5 l. ,	58
5 l. -	31
5 l. -ed	42
5 l. .	46
5 l. Name	-31
5 l. letter	-39
5 r )	-20
5 r ,	33
5 r 2	37
5 r already	-35
5 r and	59
5 r are	29
5 r at	-48
5 r back	85
5 r baths	26
5 r box	37
5 r brackets	56
5 r but	25
5 r by	-34
5 r eight	37
5 r for	36
5 r has	-28
5 r have	58
5 r hinges	32
5 r hole	-43
5 r i	34
5 r in	63
5 r is	-64
5 r layers	47
5 r left	68
5 r long	32
5 r more	93
5 r new	21
5 r nothing	-57
5 r of	158
5 r off	38
5 r outlets	59
5 r per	56
5 r post	36
5 r ring	-45
5 r round	42
5 r shelves	23
5 r tall	22
5 r the	-75
5 r things	-57
5 r three	29
5 r times	-88
5 r to	-32
5 r today	-53
5 r tomorrow	-30
5 r under	34
5 r way	-90
5 r windows	40
5 r x	-34
5 r. )	-20
5 r. ,	33
5 r. -ed	24
5 r. -ing	-46
5 r. -s	38
5 r. 1	39
5 r. letter	-51
5 r. unit	22
5 words	23
555 - _	-33
6 and _	-37
60 figures 2	21
60 l \$	-34
60 l -	-62
60 l .	58
60 l :	30
60 l a	49
60 l about	46
60 l all	46
60 l and	-23
60 l are	29
60 l at	110
60 l be	-32
60 l by	94
60 l catch	-25
60 l cut	29
60 l eleven	-44
60 l for	56
60 l from	89
60 l have	20
60 l he's	-44
60 l house	67
60 l is	54
60 l it's	-53
60 l need	50
60 l no	27
60 l not	65
60 l number	-76
60 l over	30
60 l point	29
60 l run	24
60 l says	45
60 l so	41
60 l that's	-55
60 l the	24
60 l through	29
60 l twelve	-58
60 l two	23
60 l up	-43
60 l vanity	36
60 l wall	45
60 l wants	59
60 l x	47
60 l. \$	-34
60 l. -	-62
60 l. -ed	58
60 l. -ing	52
60 l. -ly	39
60 l. -s	-31
60 l. .	58
60 l. :	30
60 l. letter	25
60 l. one	-59
60 l. unit	50
60 l. word	53
60 r 	44
60 r 
	45
60 r ,	-22
60 r -	30
60 r .	33
60 r /	-33
60 r across	42
60 r aff	30
60 r at	24
60 r bag	50
60 r boards	34
60 r bucks	-65
60 r by	-28
60 r chance	-41
60 r dollars	-74
60 r down	47
60 r fifty	-48
60 r from	25
60 r i	29
60 r of	-23
60 r off	34
60 r on	-94
60 r or	-85
60 r seven	-36
60 r slab	56
60 r so	36
60 r that	-27
60 r then	29
60 r they	40
60 r thick	46
60 r two	52
60 r wide	38
60 r x	43
60 r. #	45
60 r. 's	38
60 r. ,	-22
60 r. -	30
60 r. -ed	29
60 r. -s	-24
60 r. .	33
60 r. Name	-44
60 r. letter	62
60 r. one	-46
60 words	27
9 _. 1	-40
99 figures 1	25
99 figures 2	30
99 l 	35
99 l \$	-35
99 l a	-55
99 l about	43
99 l an	-59
99 l at	35
99 l be	29
99 l by	53
99 l got	-34
99 l height	71
99 l is	56
99 l it's	75
99 l no	21
99 l of	-98
99 l over	-54
99 l return	24
99 l temp	30
99 l the	29
99 l was	76
99 l. #	35
99 l. \$	-35
99 l. 's	31
99 l. -ing	33
99 l. -s	21
99 l. one	-64
99 l. unit	-29
99 l. word	27
99 parts	79
99 r ,	64
99 r a	-57
99 r at	23
99 r bucks	-52
99 r by	48
99 r for	-26
99 r in	60
99 r is	-56
99 r long	21
99 r on	99
99 r or	47
99 r rough	44
99 r so	61
99 r to	-40
99 r with	-44
99 r. 's	25
99 r. ,	64
99 r. -ed	22
99 r. -s	-59
99 r. unit	23
99 r. word	33
99 words	27
999 0figures 4	-62
999 figures 2	63
999 l \$	-40
999 l ,	-22
999 l :	40
999 l a	-107
999 l about	81
999 l and	77
999 l at	59
999 l extension	-26
999 l got	69
999 l is	85
999 l it's	-22
999 l like	39
999 l local	-26
999 l me	-29
999 l need	-48
999 l no	88
999 l not	43
999 l of	-41
999 l out	70
999 l ran	-37
999 l reading	27
999 l reads	55
999 l rise	66
999 l rm	-73
999 l section	-42
999 l suite	-30
999 l that's	60
999 l the	-40
999 l there	-66
999 l to	58
999 l two	35
999 l want	-28
999 l was	-44
999 l x	-32
999 l. \$	-40
999 l. 's	24
999 l. ,	-22
999 l. -ed	21
999 l. -ing	39
999 l. -s	99
999 l. 1	-61
999 l. :	40
999 l. letter	-25
999 oh	-60
999 parts	-47
999 r 
	-28
999 r -	-43
999 r 555	-49
999 r a	-36
999 r and	-64
999 r at	62
999 r bucks	-62
999 r by	-39
999 r centres	50
999 r deep	35
999 r for	-83
999 r going	44
999 r high	77
999 r is	-23
999 r k	-43
999 r now	34
999 r of	114
999 r off	65
999 r on	68
999 r over	-60
999 r panel	76
999 r pickets	24
999 r so	39
999 r the	26
999 r to	31
999 r wide	31
999 r wire	36
999 r with	36
999 r x	62
999 r. -	-43
999 r. -ed	49
999 r. /	-28
999 r. 1	-47
999 r. unit	-32
999 swallowed	-27
999 words	122
999 words round	34
9999 figures 4	-27
9999 figures 5	-29
9999 l ,	-22
9999 l -	-29
9999 l a	-71
9999 l at	140
9999 l from	-79
9999 l in	-32
9999 l the	-75
9999 l. 's	39
9999 l. ,	-22
9999 l. -	-29
9999 l. unit	-40
9999 r ,	22
9999 r and	-34
9999 r by	30
9999 r long	31
9999 r to	75
9999 r x	-31
9999 r. ,	22
9999 r. letter	-31
9999 r. word	29
9999 swallowed round	38
9999 words	-50
9999 words round	59
: ._ of	21
: ._ x	36
: _ -ed	23
: _ -s	36
: _ letter	44
: _ word	35
: _. -ed	23
: _. -s	36
: _. letter	44
: _. word	35
: head 0	36
: head 1	41
: head none	22
= head none	23
@ ._ 	25
@ _ #	25
@ _. #	25
@ head none	45
A 12	23
A 20	45
A 5	-35
A 60	-22
A 999	84
C 0	30
F 60	54
F 99	-35
F 999	22
L 1	28
Name , _	21
Name ._ .	-26
Name _ .	-26
Name _ word	-42
Name head none	-79
Name word _	-28
W 9999	22
_ 's one	63
_ 's word	-30
_ ( 1	36
_ ) .	23
_ ) word	-117
_ + 1	-26
_ , 's	46
_ , 1	-26
_ , letter	35
_ , unit	32
_ - word	-66
_ -ed #	-30
_ -ed -s	51
_ -ed .	51
_ -ed unit	42
_ -ing #	-43
_ -ing -s	31
_ -ing unit	-21
_ -ing word	25
_ -s #	117
_ -s 's	-57
_ -s -ing	64
_ -s /	-50
_ -s 1	-59
_ -s letter	47
_ -s unit	-42
_ . #	-55
_ . 's	61
_ . -ed	71
_ . -s	29
_ . /	43
_ . 1	20
_ . letter	43
_ / -	-25
_ / 1	56
_ 1 "	24
_ 1 -	46
_ 1 /	38
_ 1 1	-59
_ 1 letter	21
_ 1 unit	79
_ 1 word	26
_ : 1	-61
_ ; word	-23
_ @ 1	32
_ Name Name	-21
_ letter #	-63
_ letter 1	46
_ letter n't	24
_ letter unit	-39
_ n't word	-59
_ one #	-118
_ one -s	-55
_ one one	-85
_ one unit	104
_ unit #	28
_ unit ,	32
_ unit -s	25
_ unit 1	-33
_ unit one	-23
_ word #	32
_ word &	53
_ word -ed	-39
_ word 1	99
_ word :	-69
_ word Name	-65
_. 
 -	-25
_. 
 1	76
_. 
 word	-32
_. ( 1	36
_. ) .	23
_. ) word	-117
_. + 1	-26
_. , 's	46
_. , 1	-26
_. , letter	35
_. , unit	32
_. - word	-66
_. . #	-55
_. . 's	61
_. . -ed	71
_. . -s	29
_. . /	43
_. . 1	20
_. . letter	43
_. / 1	-34
_. / word	50
_. 2 -	29
_. 2 letter	22
_. 3 letter	-39
_. 3 unit	31
_. 4 letter	32
_. 4 unit	-27
_. 555 1	-26
_. : 1	-61
_. ; word	-23
_. @ 1	32
_. a one	-25
_. a word	-42
_. across word	47
_. after one	-78
_. after word	70
_. all word	28
_. along word	38
_. already #	-35
_. an unit	-79
_. anchors #	21
_. and 's	38
_. and -ed	25
_. and -s	-88
_. and Name	37
_. and letter	-50
_. and unit	57
_. at 1	25
_. at one	60
_. at unit	-37
_. back #	84
_. bag #	-27
_. baths #	26
_. below word	28
_. blank -s	32
_. block word	40
_. board word	47
_. boards #	23
_. boards ,	-40
_. boards word	40
_. bracket word	35
_. brackets #	36
_. brackets word	-27
_. bubble word	-92
_. bucks #	-86
_. bucks word	-77
_. but word	30
_. by 1	45
_. can word	-34
_. centers #	34
_. cents word	-33
_. clips #	21
_. come word	-43
_. corner -s	38
_. cut word	26
_. deep ,	21
_. deep word	20
_. do word	56
_. dollars word	-84
_. doors word	61
_. eight one	37
_. eight unit	-38
_. end #	-55
_. end word	32
_. even #	58
_. extra word	44
_. fifty one	-35
_. fifty unit	71
_. fifty word	-48
_. for one	21
_. gap word	42
_. get word	23
_. goes word	-25
_. going word	-32
_. good word	-44
_. got -ed	-23
_. hangers #	28
_. has word	-56
_. he -s	-30
_. high ,	61
_. high .	34
_. hinges word	44
_. hole word	-71
_. i n't	24
_. i word	30
_. i'll word	37
_. in 1	-33
_. in one	-29
_. is -ed	-41
_. is unit	45
_. is word	-71
_. it's one	58
_. it's word	-54
_. joist -s	32
_. k word	-47
_. kinds word	-54
_. larch Name	-27
_. last word	-32
_. late word	-34
_. layers word	47
_. left #	26
_. left .	29
_. left unit	41
_. leg word	-31
_. long #	29
_. long word	38
_. low #	26
_. man word	-36
_. maybe one	27
_. more #	37
_. more ,	-20
_. more -s	20
_. more unit	64
_. new -s	27
_. new one	-28
_. new word	67
_. nine one	-21
_. ninety one	-37
_. no unit	-86
_. no word	-27
_. nos .	52
_. not 1	61
_. not one	20
_. not word	-45
_. nothing word	-48
_. notice word	-33
_. now #	25
_. now .	-43
_. o'clock word	-46
_. oc word	35
_. of 's	-31
_. of -ed	31
_. of -ing	53
_. of -s	-30
_. of 1	25
_. of one	58
_. of unit	76
_. off unit	34
_. off word	34
_. oh word	29
_. on Name	-50
_. on one	48
_. on word	35
_. one one	-57
_. one word	53
_. out #	30
_. out word	-27
_. outlets word	49
_. panel word	-49
_. part word	-83
_. past one	-29
_. per unit	43
_. per word	56
_. pickets word	24
_. pipe word	-31
_. please .	31
_. post #	33
_. proud word	37
_. right word	23
_. round ,	-21
_. round word	-58
_. says word	-29
_. screws #	42
_. screws word	42
_. second #	-50
_. second word	-21
_. seven #	-20
_. sharp #	-56
_. shelf -s	71
_. shelves word	24
_. short word	56
_. should word	25
_. shy word	25
_. side word	-58
_. six one	-38
_. so letter	-20
_. so one	-34
_. so word	25
_. studs #	27
_. ten unit	46
_. that -s	-37
_. that's word	32
_. the 's	-56
_. then word	21
_. there word	22
_. thick word	35
_. things word	-60
_. three unit	22
_. times #	-60
_. times 's	-60
_. times word	-47
_. to 1	34
_. to one	-139
_. to unit	105
_. to word	38
_. tomorrow word	-59
_. too word	36
_. toward word	24
_. treads #	54
_. tub word	25
_. turn word	-109
_. twenty one	-27
_. two unit	27
_. under word	-36
_. up word	38
_. used .	31
_. wall word	25
_. wants word	-42
_. was word	-30
_. way word	-25
_. ways word	-31
_. we word	-39
_. went unit	45
_. when word	28
_. where word	22
_. white word	34
_. wide #	25
_. wide ,	29
_. wide word	26
_. windows #	25
_. wire -s	66
_. with one	32
_. with word	-22
_. wrongs n't	-38
_. x 1	43
a _. #	37
a _. one	-20
a _. word	-41
a a	-29
a about	-70
a above	-21
a across	55
a add	34
a adds	-59
a adhesive	-24
a aff	52
a again	-23
a ain't	76
a alder	-46
a all	-21
a along	56
a already	-29
a also	59
a am	-40
a an	-40
a anchors	51
a and	27
a another	-45
a anybody	22
a anything	62
a are	46
a area	-36
a arm	35
a as	-78
a ask	-35
a attic	-58
a away	-23
a baby	-30
a back	79
a backer	28
a backset	23
a bag	31
a ball	42
a balusters	-21
a bar	38
a barn	-31
a bars	62
a base	59
a basement	-25
a bases	-26
a bath	98
a baths	56
a batts	-27
a bay	-36
a be	32
a bead	48
a beads	48
a bearing	21
a because	62
a bedroom	-87
a behind	37
a below	56
a bends	45
a bent	-45
a better	-27
a between	70
a big	42
a birch	-59
a bit	89
a black	86
a blade	42
a blank	32
a blind	-51
a blinds	30
a block	21
a blocks	46
a blue	-44
a boards	44
a bolt	66
a bolts	83
a bone	-34
a book	-29
a books	-48
a boots	-51
a bought	85
a bowl	30
a box	77
a boxes	32
a bracket	66
a brass	105
a breaker	23
a breakers	-30
a brick	50
a broken	107
a brown	49
a brushes	78
a bubble	-92
a bucket	86
a bucks	-80
a buddy	-101
a bulbs	48
a business	-88
a but	75
a buzzer	-62
a cabinet	-25
a cable	-37
a came	20
a can	58
a can't	-45
a cans	72
a cap	74
a caps	-35
a carriage	31
a case	44
a casing	48
a caulk	-36
a cause	45
a cdx	30
a cedar	-31
a ceiling	59
a cement	30
a center	76
a centers	119
a centimeter	51
a centre	49
a centres	57
a cents	-70
a chance	-58
a change	45
a chimney	56
a chipped	60
a circuit	83
a clamps	57
a clean	34
a client	-71
a clips	130
a close	30
a closet	67
a closets	34
a coarse	37
a coat	-78
a coats	50
a code	20
a coil	44
a cold	49
a comes	-33
a coming	34
a compound	-20
a contact	21
a corner	25
a cost	-52
a couplings	63
a course	25
a court	-23
a cover	27
a crack	-23
a cracked	65
a crew	80
a crown	-31
a cut	-38
a cutouts	30
a cuts	25
a dash	-47
a day	-108
a days	-89
a dead	58
a deck	46
a decking	36
a decks	78
a deep	91
a degree	40
a delivered	31
a desk	57
a did	28
a didn't	28
a dishwasher	-50
a do	-20
a does	-38
a doing	-38
a dollar	-153
a dollars	-98
a don't	-90
a done	41
a dont	48
a door	-44
a door's	81
a dos	41
a double	50
a doubled	39
a downspouts	26
a dozen	-72
a drawer	-41
a drilled	-28
a drip	44
a drips	-21
a driveway	-60
a drop	42
a drops	82
a dryer	-80
a duct	62
a dumpsters	20
a each	75
a east	-59
a edge	88
a eggshell	93
a eighteen	44
a eighth	35
a eighths	-39
a eights	49
a either	-83
a elbow	53
a elbows	79
a electrician	45
a eleven	-26
a em	116
a empty	-27
a enamel	44
a enough	-41
a euro	-123
a even	77
a every	61
a except	83
a expansion	50
a extra	34
a face	26
a faced	-49
a factory	69
a fall	90
a far	60
a fault	-27
a felt	33
a fiber	25
a fifteen	27
a fifteens	28
a fifty	28
a figure	24
a filler	33
a filter	48
a find	-71
a finish	-21
a finished	23
a first	-27
a fix	-72
a fixed	49
a flapper	-75
a flat	91
a flex	-59
a flowing	41
a flue	44
a flush	-31
a foam	-27
a foot	31
a footers	71
a footings	38
a for	46
a foreman	-96
a forgot	-44
a form	-35
a forty	33
a found	-34
a fours	62
a fourteen	76
a framed	-56
a fri	20
a friday	55
a fridays	-56
a from	35
a frost	-41
a ft	-33
a full	47
a g	25
a gal	21
a gallon	-31
a gang	-56
a gap	-40
a garage	86
a gate's	-41
a gave	34
a gets	-34
a gfci	39
a give	103
a glass	78
a glued	-57
a go	37
a goes	39
a gonna	43
a good	74
a good _	32
a got	43
a grade	67
a grate	-59
a gravel	102
a gray	43
a grease	34
a green	27
a grid	43
a grit	49
a ground	-42
a grout	66
a guy	-115
a guys	-79
a hair	26
a half	-23
a hall	63
a hand	-54
a handle	-138
a hang	-68
a hanger	-34
a hangers	158
a has	-61
a hatch	-43
a he	-44
a he'll	-37
a he's	-21
a head	-89
a header	32
a heads	-52
a heavy	34
a held	-37
a hidden	24
a high	22
a him	-96
a hinges	64
a his	-40
a holding	31
a hole	-60
a holes	70
a hollow	-22
a home	26
a homeruns	-72
a hook	-40
a hour	-29
a house	71
a how	31
a humidity	25
a hums	-82
a hundred	42
a hung	-24
a i	-46
a i've	96
a id	-27
a inches	106
a incl	22
a installed	-20
a instead	56
a into	36
a invoice	-71
a iron	-57
a is	-27
a ish	-44
a isn't	36
a it's	-27
a jack	30
a jacks	21
a joist	38
a joists	38
a just	-54
a k	-74
a key	-50
a keys	-35
a kind	27
a kinds	-54
a kit	87
a kitchen	-25
a knobs	38
a l	51
a lag	25
a laid	33
a lamp	51
a landing	21
a larch	-27
a last	-57
a late	-48
a latest	-63
a lavs	32
a layer	-97
a layers	47
a lazy	-23
a lead	20
a leak	55
a leaks	-70
a leaning	22
a led	25
a legs	52
a length	-60
a leveler	39
a lid	62
a lift	-74
a light	81
a like	-39
a lime	44
a lintel	24
a little	30
a live	40
a load	61
a location	102
a lock	-45
a long	99
a longer	28
a look	-34
a looks	-34
a lot	-87
a low	41
a lower	26
a m10	32
a maple	-23
a master	-59
a mastic	21
a mate	-68
a max	90
a medium	-69
a meg	32
a membrane	-34
a metal	-48
a meter	80
a metres	36
a middle	58
a mil	48
a millimeter	-27
a million	-110
a min	-29
a minimum	60
a minus	21
a minute	-51
a minutes	-43
a missing	35
a miters	49
a mix	45
a mixing	34
a mm	49
a moisture	36
a monday	-51
a more	46
a morning	-94
a mortar	30
a move	91
a moved	-65
a mud	48
a must	-27
a my	-61
a n	41
a nail	21
a nails	151
a nd	-37
a need	22
a needs	-20
a new	46
a new _	-59
a next	-27
a night	-61
a ninety	39
a no	-45
a nobody	28
a none	49
a noon	-48
a north	26
a nos	52
a not	-33
a nothing	-64
a now	24
a number	57
a o'clock	-77
a oc	47
a offset	-35
a oil	23
a old	43
a on	26
a once	-26
a opened	59
a order	75
a ordered	51
a other	-57
a ought	33
a ours	-33
a outlets	98
a outside	-30
a packed	27
a packers	-110
a paint	-26
a pan	48
a panel	-49
a panels	97
a pantry	41
a papa	-22
a part	-64
a parts	35
a past	-90
a patch	-51
a pavers	41
a pay	-68
a pcs	22
a per	80
a permit	-32
a pickets	43
a pieces	47
a piers	37
a pine	117
a pins	54
a pipe	48
a pitched	-40
a place	-22
a planed	64
a plank	-22
a plaster	86
a plate	75
a plate's	-23
a plates	35
a please	47
a plenty	94
a plugged	44
a plugs	29
a plumber	-26
a ply	-35
a plywood	50
a pm	-71
a point	-23
a pole	-139
a porcelain	63
a porch	-64
a post	58
a potato	-65
a pound	-67
a power	-22
a pressure	37
a prime	-45
a primed	27
a primer	72
a problem	-26
a proud	31
a pull	33
a pulls	75
a pump	60
a punch	-46
a qt	22
a quart	26
a quarter	-24
a quid	-70
a quiet	-26
a quit	-40
a radiator	41
a radio	-134
a ran	30
a range	-22
a rapid	30
a ready	-64
a receps	35
a red	44
a reducer	67
a remain	55
a required	31
a reset	-23
a rest	38
a return	40
a reveal	21
a ring	57
a rise	68
a riser	21
a risers	34
a road	-78
a rock	40
a rocks	-80
a rod	32
a rods	42
a roller	27
a roof	-28
a rotted	48
a rough	35
a round	-63
a rubber	75
a rule	-23
a rungs	47
a runs	-22
a s	-25
a sacks	27
a safe	57
a said	-45
a sand	20
a sandwich	-79
a sash	23
a satin	46
a saw	-27
a say	-55
a screens	35
a screw	22
a screwed	61
a screws	86
a scribe	27
a seal	38
a sealed	73
a second	-56
a sent	22
a set	51
a setting	30
a seventh	-54
a seventy	61
a sf	32
a sharp	-64
a she	33
a she's	-56
a shed	67
a sheet	-38
a shelf	34
a shellac	22
a shimmed	42
a shims	105
a shingle	36
a short	71
a showed	-90
a shower	-60
a shows	-26
a shut	-61
a shuts	26
a shy	40
a side	64
a silicone	-21
a sill	62
a since	-30
a single	24
a sink	94
a six	40
a sixteen	112
a sixteenths	-65
a sixty	-31
a slab	64
a slabs	-35
a slack	33
a slate	61
a sleeve	36
a slides	57
a slope	104
a slow	-68
a slump	27
a smoke	34
a smokes	-92
a so	29
a socket	49
a sockets	-22
a soft	56
a some	55
a somebody	-28
a somebody's	41
a somewhere	-57
a sound	-57
a space	58
a spacers	63
a spaces	79
a spot	38
a stacked	28
a stainless	51
a stairs	-52
a static	28
a stays	32
a step	-74
a steps	34
a stick	40
a sticks	-43
a stock	23
a stone	-71
a stops	-32
a store	42
a story	-41
a stove	-21
a straight	-45
a strapping	74
a straps	-53
a strike	-22
a strip	26
a strips	24
a stroke	-40
a strong	30
a strong _	65
a structural	25
a stud	59
a studs	130
a stuff	43
a suction	58
a supplier	-54
a supply	59
a supposed	30
a swap	-76
a sweep	51
a switch	93
a switches	38
a tag	-27
a take	65
a tall	69
a tap	113
a tape	91
a taped	23
a tee	34
a tees	49
a tell	-43
a temp	30
a tens	65
a tested	-30
a than	23
a that	-33
a that's	-24
a thats	22
a their	-22
a them	-22
a them's	-22
a then	-30
a there	49
a there's	-22
a thermostat	-24
a these	65
a they	-79
a they're	100
a thick	58
a thing	-89
a things	-87
a thinset	63
a thirty	24
a this	-32
a those	-70
a thousand	-37
a threes	-58
a thursday	-38
a tie	23
a tight	34
a tile	104
a tiles	53
a time	-42
a times	-130
a tin	28
a tip	-87
a to	21
a today	-39
a toe	-32
a together	-139
a toilet	47
a told	-48
a too	-74
a top	64
a tops	26
a torn	-55
a total	69
a touch	-26
a toward	-25
a traps	33
a tray	-38
a tread	-77
a treads	36
a trim	21
a trimmed	21
a trip	44
a truck	24
a tub	80
a turn	-91
a turned	-31
a twenty	34
a type	66
a u	43
a under	-31
a unit	-61
a until	51
a up	37
a upper	35
a uppers	-23
a upstairs	-52
a us	-93
a use	41
a used	21
a v	-24
a valve	86
a van	59
a vent	62
a vinyl	36
a w	68
a wafers	32
a wait	-39
a walked	39
a wall	27
a walls	-23
a walnut	32
a wanted	58
a was	-22
a washer	-22
a washers	41
a waste	45
a watch	-67
a water	-45
a way	-58
a ways	-71
a wc	34
a we	23
a weather	29
a wednesday	-40
a week	-89
a went	31
a wet	-26
a whatever	-78
a when	-26
a which	63
a while	39
a whoever	-27
a whole	-45
a wide	76
a will	39
a wind	-34
a window	-29
a windows	27
a wire's	45
a wired	32
a with	27
a word	-48
a work	-40
a works	-57
a wouldn't	-117
a wrench	45
a wrong	-41
a wrongs	-38
a x	67
a y	48
a yard	-67
a yesterday	21
a yet	-74
a you	-57
a you're	71
a zero	-26
a zip	-99
about _. #	-58
about _. .	35
about _. word	42
above _. word	38
add _. word	23
after _. #	-66
after _. word	-27
all _. word	46
also _. word	58
an _. word	-74
and _. #	-95
and _. -ing	80
and _. 1	-30
and _. one	67
and _. unit	79
and _. word	59
and a _	55
and about _	37
and half _	-33
and it's _	-57
angle figures 1	40
angle figures 2	28
angle l 	-81
angle l at	46
angle l. #	-81
angle l. word	99
angle r 	-46
angle r ,	23
angle r of	-81
angle r. #	-46
angle r. ,	23
angle words	-28
angle words round	-38
another _. #	48
another _. .	-28
apartment _. word	-35
are _. ,	24
are _. word	53
area figures 1	22
area l 	35
area l. #	35
area l. word	44
area r. word	64
area said whole	70
area words	27
area words round	35
as _. word	-70
at _. #	24
at _. ,	35
at _. -	38
at _. -s	43
at _. .	25
at _. Name	-25
at _. one	-33
at least _	56
at number _	-37
at the _	-39
b about	23
b above	55
b abt	30
b actually	39
b add	78
b adhesive	31
b after	-49
b again	-24
b ain't	37
b air	43
b allow	111
b along	20
b already	29
b alright	-44
b also	22
b amp	95
b amps	112
b an	-30
b anchors	40
b and	35
b another	-23
b anything	58
b apart	22
b apartment	-96
b are	91
b arrived	66
b as	-66
b ate	22
b attic	-42
b away	26
b b	-28
b back	-23
b badge	-30
b bag	41
b bags	26
b bakery	-33
b baluster	-60
b balusters	-40
b bar	67
b bare	-38
b baseboard	24
b basement	-62
b bases	25
b basin	20
b bath	-49
b bath's	69
b batt	67
b batts	-36
b bay	-40
b bead	34
b beam	21
b beam's	31
b bearing	-52
b beat	-89
b because	40
b bed	-84
b bedded	-61
b bedroom	-107
b bedrooms	-30
b been	81
b before	-52
b behind	48
b belly	36
b below	-37
b belts	63
b bench	38
b bent	76
b better	58
b between	-23
b bib	30
b big	-62
b bin	-66
b black	81
b bldg	-22
b blinds	41
b block	-27
b blood	-96
b blower	33
b boiler	36
b bolt	24
b bolts	61
b bonding	-33
b booked	-72
b born	-20
b boss	-34
b both	-53
b bought	45
b bout	27
b boxes	24
b brackets	96
b breaker	-99
b breaker's	53
b breakers	74
b bring	156
b bringing	74
b broke	90
b broken	-52
b brought	108
b brush	25
b bucket	29
b buckets	28
b building	-42
b bus	-39
b but	26
b buy	74
b cable	61
b called	-32
b calls	69
b cam	-77
b came	128
b camera	-22
b cans	58
b card	50
b carpet	-28
b cartons	-30
b cat	-47
b catch	-24
b cats	-89
b caulk	20
b cause	49
b cbd	29
b ceiling	28
b cell	-90
b center	61
b centres	46
b cfm	31
b change	66
b changed	70
b channel	-73
b chapter	-23
b charge	-57
b charged	-85
b chimney	-32
b circuit	-63
b class	-35
b cleaned	38
b clears	-74
b clips	57
b clos	-93
b close	-37
b closed	-21
b closer	81
b closet	24
b co	29
b code	-78
b code's	-96
b coffee	31
b coil	39
b cold	42
b come	-72
b coming	-28
b company	-37
b confirmation	-41
b control	69
b copper	27
b cord	38
b correction	29
b cost	-125
b counter	-52
b countertop	-37
b cover	36
b crack	32
b crooked	25
b crown	45
b ctr	29
b cuatro	26
b cut	26
b cutout's	52
b cutting	-51
b cyds	26
b cylinder	28
b dash	-37
b day	-71
b days	-22
b dead	34
b deck	36
b deep	75
b degrees	22
b delivery	-28
b demo'd	38
b den	22
b detail	-79
b did	-76
b dining	-29
b dips	22
b dishwasher	38
b do	-38
b dock	-41
b does	-37
b dog	-79
b doing	-67
b don't	-52
b done	28
b door	-34
b door's	31
b doors	-27
b double	62
b down	88
b downspouts	37
b dozen	-62
b drags	83
b drain	34
b drawer	-48
b drawing	45
b drill	42
b drilled	34
b drop	44
b dry	84
b dryer	-33
b drywall	-69
b duct	46
b dye	-35
b e	-23
b each	47
b edge	46
b egress	-49
b eight	35
b eighteen	75
b eighths	117
b eighty	-76
b elbows	59
b electrician	-56
b elevator	-83
b eleven	24
b em	27
b empty	-43
b end	57
b enough	20
b epoxy	-51
b except	61
b exit	-70
b extension	-25
b exterior	-58
b extra	31
b eyes	-61
b fall	-51
b falls	-24
b fan	79
b far	81
b faucet	23
b fault	-36
b felt	32
b fence	21
b fifteen	49
b fifty	42
b figure	62
b figuring	24
b filled	22
b filler	29
b filter	29
b filters	50
b final	-43
b fine	-54
b finished	37
b fit	-53
b fitted	-37
b fix	-46
b flange	28
b flashing	47
b flat	-29
b flight	-34
b flow	25
b flue	63
b foam	20
b footing	53
b footing's	51
b forget	34
b found	76
b fourteen	39
b framing	-46
b free	39
b friday	-36
b fridge	35
b from	-33
b front	-63
b full	58
b g	-23
b gallon	82
b gallons	80
b gang	37
b gap	25
b gap's	29
b garage	38
b gasket	29
b gate	-52
b gauge	34
b gauged	84
b generator	122
b get	79
b getting	24
b give	-27
b gloss	33
b glue	93
b glued	43
b going	24
b gone	49
b got	64
b gotta	47
b grab	72
b grade	29
b gravel	60
b green	-58
b grout	32
b guest	-24
b guide	-48
b gutter's	-22
b guy	-32
b guys	-76
b had	57
b hallway	45
b hand	27
b hang	-41
b hangers	45
b hard	58
b hardware	-27
b has	51
b hatch	-54
b have	70
b he	-100
b he'll	-44
b he's	-157
b head	77
b header	25
b header's	105
b hearth	53
b heat	-34
b heater's	30
b height	40
b held	41
b her	-61
b here	-58
b him	-91
b hinge	44
b hinges	-62
b his	-123
b hit	29
b hits	41
b holding	38
b holds	43
b holes	48
b homeruns	-41
b honestly	-57
b hood	33
b hose	46
b hot	-46
b hour	-81
b hours	-60
b house	-37
b how	36
b humidity	64
b humidity's	38
b hung	84
b i'd	21
b i'm	48
b i've	61
b if	25
b inch	82
b inlet's	88
b inside	68
b inspector	-79
b install	-27
b instead	30
b insulation	-42
b into	68
b invoice	-87
b island	79
b it'll	62
b item	-50
b itself	-37
b jamb	34
b jan	74
b joint	30
b joint's	21
b joints	35
b joist	70
b joists	48
b just	98
b k	-64
b key	-67
b kick	-95
b kind	95
b kit	37
b kitchen	60
b knobs	42
b l	68
b l1	28
b ladder	41
b lady	-55
b lags	48
b laid	45
b laminate	41
b landing	30
b last	43
b latch	-43
b lb	44
b leafs	-34
b least	56
b leave	41
b leaves	87
b led	76
b left	49
b leg	94
b lengths	62
b less	39
b let	104
b level	-80
b lid	28
b light	-22
b lights	60
b like	35
b line	57
b linen	31
b liner	-38
b lines	48
b lining's	41
b lintel	24
b lintel's	26
b listen	-22
b litres	43
b little	-70
b load	56
b lobby	40
b local	-26
b lock	-21
b lockbox	-70
b longer	-58
b loop	-39
b loose	61
b lost	-66
b lot	-125
b lounge	76
b lumber	-47
b lvl	-37
b m	-58
b main	-48
b make	83
b man	-52
b marble	73
b mark	-81
b marked	40
b mastic	26
b mat	-21
b mate	-47
b max	56
b maybe	30
b measure	-35
b measures	-55
b medium	46
b meet	-46
b membrane	-42
b mesh	21
b metal	-29
b meter	116
b meter's	27
b metre	32
b metres	58
b millimeter	31
b million	-67
b min	28
b minus	-23
b minute	-25
b mirror	64
b mirror's	27
b miss	-26
b missing	26
b missus	-37
b mixer	25
b mm	58
b moisture	79
b mold	43
b mon	-76
b monday	-24
b moon	-75
b mortar	34
b mosaic	43
b most	-89
b mount	28
b mounted	51
b move	38
b mrs	-41
b must	30
b my	-91
b nail	57
b nailed	83
b nails	54
b nd	-70
b near	-62
b need	66
b needs	37
b net	-42
b new	-26
b next	-113
b nice	-34
b niche	-30
b nineteen	-59
b no	45
b nobody	-75
b none	42
b not	-49
b note	-43
b nothing	46
b now	53
b number	-116
b number's	-79
b numbers	-32
b nursery	56
b nuts	35
b oc	21
b off	34
b office	-21
b ohm	24
b ohms	56
b oil	-64
b okay	-65
b old	-64
b only	89
b open	-27
b opened	21
b opening	69
b opening's	39
b opens	-69
b option	-56
b or	22
b ordered	85
b ought	24
b out	29
b outlet	-35
b outlets	52
b outside	68
b oven	50
b over	32
b overall	36
b overhang	47
b owe	42
b owes	-23
b p	-37
b pack	-27
b packed	78
b packet	-36
b pad	-24
b page	-76
b paid	-76
b paint's	-51
b painted	-48
b panel	39
b panels	45
b paper	-37
b patch	65
b patio	-26
b pay	-113
b pcs	-50
b permit	-60
b pete	-59
b phase	-39
b pick	102
b pieces	32
b pier	-50
b pinned	31
b pins	24
b pipe	89
b pipes	27
b pitch	-55
b pitched	24
b pl	26
b place	-40
b plan	-34
b planed	-28
b plant	97
b plaster	117
b plastic	-45
b plates	50
b please	97
b plot	-37
b plug	28
b plugs	26
b plumb	20
b plus	84
b ply	21
b plywood	66
b po	-66
b pocket	33
b point	49
b pole	-76
b policy	-30
b poly	-61
b port	-28
b post	75
b pound	35
b pounds	-52
b poured	45
b pressure	-39
b pressure's	104
b primed	-23
b profile	-20
b proud	47
b psi	120
b pt	27
b pu	51
b pulled	-55
b pulling	46
b pulls	32
b pump	-49
b punky	31
b put	92
b qt	48
b quarter	-65
b quarts	-44
b r	-100
b rack	-85
b radiator	55
b rail	-42
b rain	49
b ran	22
b range	41
b rapid	-50
b rated	52
b re	-24
b read	79
b reading	100
b reads	70
b real	24
b rebar's	51
b receptacles	26
b reckons	-37
b red	21
b ref	-48
b rego's	-22
b relief	99
b rental	-79
b reorder	-38
b reset	33
b return	91
b rev	-34
b reveal's	107
b reveals	47
b rfi	-23
b rh	71
b right	-33
b rip	21
b ripped	38
b rise	108
b riser	-56
b rm	-66
b ro	-28
b road	-62
b rock	63
b rod	40
b roll	37
b rolls	-40
b roof	-65
b room	-73
b rotten	30
b roughed	38
b roughly	-27
b round	-29
b route	-41
b row	-94
b rtu	-93
b rubber	-25
b run's	57
b s	24
b sags	23
b salon	66
b same	-59
b sand	-55
b sanded	-64
b sanding	24
b sat	-59
b saturday	-84
b saves	-42
b saw	-35
b say	56
b saying	24
b says	35
b sch	-49
b screen	22
b screw	36
b screwdriver	28
b screwed	64
b screws	24
b scribe	-32
b seal	-54
b sealed	-48
b sealer	32
b seam	-48
b seat	47
b section	-42
b send	-60
b sent	88
b serial	-39
b set	150
b setting	-60
b seven	22
b seventy	56
b she'll	-53
b she's	-56
b shear	48
b shed	-74
b sheet	-43
b sheetrocks	59
b sheets	42
b shelf	60
b shelves	49
b shift	-20
b shim	-45
b shimmed	57
b shoe	-37
b short	100
b shorted	92
b should	59
b should've	61
b shower	-61
b shy	74
b side	60
b side's	28
b sill	55
b since	-36
b sink	55
b sister	30
b sit	64
b site	-108
b sits	41
b six	58
b sixteen	40
b sixteenth	24
b sixteenths	34
b sixty	95
b size	-70
b skip's	-33
b slab	87
b slider	-60
b slope	-26
b small	33
b smoko	-60
b snag	-30
b snapped	-32
b sockets	26
b soft	29
b somebody	58
b something	-53
b space	45
b spacers	-23
b spacing	90
b spare	40
b spec	60
b splash	45
b sq	25
b squares	36
b stack	34
b stainless	47
b stair	-59
b stairs	-35
b stands	40
b start	-65
b starts	-33
b stat	35
b static	60
b static's	51
b stay	43
b stays	52
b steel	55
b steps	34
b sticker	20
b sticks	-24
b still	-26
b stitch	-42
b stock	44
b stone	89
b stove	41
b strap	45
b stringers	21
b strong	74
b stuck	52
b stud	38
b studs	70
b stuff	81
b subcool	33
b subfloor	41
b submittal	-68
b suction	58
b suite	-39
b superheat	94
b supply	65
b supposed	-63
b surround	-24
b swapped	31
b table	-38
b tack	47
b tag	-64
b take	-24
b takes	-24
b tank	-51
b tell	41
b temp	106
b ten	-45
b tenant	-40
b tens	36
b test	69
b tested	61
b th	-41
b than	33
b that's	-35
b their	-49
b them	51
b then	-54
b there	38
b theres	26
b thermostat	75
b they're	-92
b they've	-43
b thick	34
b thickness	36
b thing	-24
b think	-50
b thinset	49
b third	47
b thirteen	101
b this	-67
b though	49
b three	73
b throw	75
b thursday	-86
b ticket	-82
b tied	60
b tight	56
b til	-70
b tile	26
b tile's	22
b tiled	33
b tiles	59
b till	-40
b time	-30
b times	-56
b tip	-51
b toast	41
b today	-27
b toe	-27
b toilet	74
b tomorrow	-22
b ton	23
b took	50
b torn	62
b torque	24
b torqued	38
b total	65
b touch	-62
b tower	20
b track	21
b trailer	-82
b transition's	35
b trap	52
b tray	28
b treads	35
b trim	54
b tripping	46
b truck	63
b truck's	-61
b tub	28
b tube	41
b turned	-78
b turns	-29
b twelve	126
b twice	77
b two	31
b txt	-31
b type	-91
b u	-57
b under	61
b unit	-41
b up	29
b uphill	-43
b uppers	37
b upstairs	47
b used	115
b valve	114
b valve's	51
b van	96
b vanity	49
b vent	62
b vinyl	-26
b volts	43
b w	55
b wait	36
b walk	-31
b wall	68
b wall's	67
b walls	-20
b walnut	-81
b want	42
b wanted	69
b wants	35
b wardrobe	-61
b was	-22
b washer	33
b washers	-51
b waste	71
b way	-32
b we're	30
b wedge	28
b wednesday	-55
b week	-56
b weeps	56
b went	91
b wet	75
b what's	-36
b where	46
b white	71
b whole	-37
b width	98
b wife	-73
b win	-20
b window	-61
b windows	54
b wire	48
b wire's	20
b with	53
b won't	56
b wood	-52
b would	30
b wouldn't	-67
b y	28
b yard	-68
b year	-21
b yesterday	21
b yet	52
b zero	-82
b zip	-52
b zone	-62
back _. word	30
back at _	-29
back in _	-80
back with _	78
bag 1	-61
bag 12	24
bag 2	37
bag 20	24
bag 5	57
bare 0	70
bare 1	-56
bare 2	64
bath _. word	-64
bay _. word	-83
be _. #	51
be _. ,	49
be _. .	26
be _. word	36
be there _	-83
bedroom _. word	-58
between _. word	-26
boards , _	39
bought _. word	70
box 1	38
box 2	27
breaker _. word	-51
breaker's a _	53
bring _. .	23
bring _. word	55
bring me _	38
bucket 1	29
bundle 1	-73
burned through _	31
but _. word	41
buy : _	40
buy _. .	29
buy _. word	78
by _. #	48
by _. ,	-35
by _. -ed	40
by _. .	-96
by _. unit	-38
by _. word	32
call it _	63
calls for _	59
came _. word	36
can 1	50
can 12	32
carton 1	-35
cartridge 1	25
case 1	74
catch _. word	-25
change order _	-64
channel _. word	-41
chapter _. word	-23
circuit _. word	-55
claims 2	-38
class of _	-30
cm 1	35
coat 2	20
coat _. word	-61
code _. word	-28
code is _	-28
come _. word	-31
count figures 1	61
count figures 2	33
count l and	35
count l at	65
count l in	-60
count l need	-34
count l. 's	-93
count l. -s	78
count l. 1	56
count l. unit	-27
count l. word	39
count r 	64
count r 
	39
count r ,	35
count r .	95
count r and	71
count r of	26
count r way	64
count r. #	64
count r. ,	35
count r. -s	-26
count r. .	95
count r. /	74
count r. word	-31
count words round	40
cup 1	-60
current figures 2	-55
current figures 3	71
current l 	46
current l a	39
current l the	71
current l. #	46
current l. -s	20
current l. 1	21
current l. unit	41
current l. word	-35
current r ,	-40
current r panel	76
current r. ,	-40
current r. word	57
current said whole	25
current words	25
current words round	78
cut _. -s	41
cut _. word	52
cut at _	30
cut me _	75
cut to _	46
dash _. #	-27
day 12	-47
day 2	94
day 5	-50
day 60	-78
day _. .	-70
day _. word	-55
deg 12	-70
deg 5	47
deg 60	60
deg 99	20
deg 999	77
detail _. word	-33
door _. word	-39
down _. word	20
down from _	-26
down to _	46
drain _. word	-35
dropped _. word	-28
drops _. word	35
drove _. word	-28
each 12	-45
each 20	20
each 5	29
each 60	38
each 999	-25
eight by _	22
elbows and _	28
every _. word	-47
except the _	-53
exit _. #	-57
exit _. word	-40
extension _. #	-26
exterior _. #	-50
falls _. unit	-27
falls _. word	23
feet _. word	-71
feet of _	-22
fifty - _	-33
figure _. word	30
figures 1 # -s	47
figures 1 # .	-117
figures 1 # word	59
figures 1 ( word	47
figures 1 + word	22
figures 1 , ,	23
figures 1 , -s	77
figures 1 , 1	23
figures 1 -ed ,	24
figures 1 -ed .	33
figures 1 -ed word	65
figures 1 -s ,	21
figures 1 -s -s	42
figures 1 -s .	63
figures 1 . )	-56
figures 1 . -ed	-31
figures 1 . -s	40
figures 1 / .	-85
figures 1 1 #	-30
figures 1 1 1	-59
figures 1 1 letter	32
figures 1 : -ed	22
figures 1 : -s	28
figures 1 : letter	34
figures 1 : word	56
figures 1 l. #	51
figures 1 l. +	26
figures 1 l. ,	68
figures 1 l. -ed	40
figures 1 l. /	-36
figures 1 l. 1	-30
figures 1 l. :	38
figures 1 l. Name	-54
figures 1 l. letter	59
figures 1 l. one	51
figures 1 letter word	23
figures 1 r. #	-26
figures 1 r. )	-34
figures 1 r. -ed	41
figures 1 r. -ing	20
figures 1 r. -s	99
figures 1 r. /	36
figures 1 r. :	-52
figures 1 r. letter	-34
figures 1 r. word	38
figures 1 unit .	-20
figures 1 unit letter	46
figures 1 word #	-25
figures 1 word )	33
figures 1 word +	-31
figures 1 word ,	-22
figures 1 word -	31
figures 1 word -s	38
figures 1 word .	55
figures 1 word /	34
figures 1 word :	-29
figures 2 # #	39
figures 2 # -s	66
figures 2 , -s	39
figures 2 , .	-40
figures 2 , word	27
figures 2 - ,	-29
figures 2 -ed word	43
figures 2 -s ,	36
figures 2 -s word	29
figures 2 . word	-40
figures 2 : word	26
figures 2 l. #	64
figures 2 l. \$	-52
figures 2 l. 's	41
figures 2 l. -ing	29
figures 2 l. -ly	40
figures 2 l. -s	71
figures 2 l. /	-52
figures 2 l. 1	21
figures 2 l. :	50
figures 2 l. @	30
figures 2 l. Name	-40
figures 2 l. letter	78
figures 2 letter #	49
figures 2 letter word	39
figures 2 one -	-25
figures 2 r. -s	35
figures 2 r. .	35
figures 2 r. /	-29
figures 2 r. 1	46
figures 2 r. :	-32
figures 2 r. ;	29
figures 2 r. @	29
figures 2 r. letter	45
figures 2 r. unit	50
figures 2 unit #	33
figures 2 unit word	42
figures 2 word #	-41
figures 2 word ,	42
figures 2 word .	45
figures 2 word /	27
figures 2 word letter	35
figures 2 word unit	38
figures 2 word word	-35
figures 3 # word	-26
figures 3 , word	71
figures 3 -ing word	40
figures 3 1 1	-31
figures 3 l. #	-22
figures 3 l. \$	-40
figures 3 l. ,	67
figures 3 l. -ing	44
figures 3 l. -s	32
figures 3 l. 1	-47
figures 3 l. :	38
figures 3 l. letter	-21
figures 3 l. unit	54
figures 3 letter ,	20
figures 3 letter .	23
figures 3 letter word	-51
figures 3 r. #	24
figures 3 r. -	-43
figures 3 r. .	21
figures 3 r. /	-31
figures 3 r. letter	44
figures 3 word -	-27
figures 4 # word	-30
figures 4 's word	32
figures 4 l. #	-30
figures 4 l. 's	32
figures 4 l. ,	-22
figures 4 l. -	-29
figures 4 l. word	-36
figures 4 r. #	-39
figures 4 r. letter	-31
figures 4 word #	-57
figures 4 word ,	34
figures 4 word .	28
figures 4 word letter	-33
figures 5 l. word	-48
figures 5 r. word	-33
figures 5 word word	-31
finish , _	47
first _. word	-28
five _. #	-21
five _. -s	-30
five at _	68
floor _. #	-49
flow r. word	29
flow said whole	38
flow words	22
foot by _	69
foot of _	-56
for _. #	97
for _. -s	-25
for _. word	-32
for about _	45
form 0figures 4	-62
form figures 1	25
form figures 2	37
form figures 4	-27
form figures 5	-51
form oh	-60
form parts	29
form swallowed	-27
forty by _	58
found _. word	72
four _. word	-23
four to _	-42
fridge is _	31
from _. one	-23
ft , _	23
ft 1	-58
ft 12	49
ft 2	75
ft 20	56
ft 5	-41
ft 60	71
ft 999	-45
gal 5	31
gal 60	32
gap _. word	52
gap of _	28
gate code's _	-33
gauge figures 2	23
gauge said whole	23
get _. .	84
get _. one	28
get _. word	103
go _. #	74
gonna be _	-56
gonna want _	28
good _. word	46
got _. #	79
got _. -s	-70
got _. unit	51
got _. word	50
got a _	26
got maybe _	23
grab _. #	59
grab _. word	53
h implied fraction	-43
h implied mixed	-39
h none decimal	23
h none whole	-22
h said decimal	57
h said fraction	107
h said mixed	42
h said whole	50
h shared fraction	36
h shared mixed	37
h shared whole	-67
had _. word	37
half and _	26
half by _	40
half past _	-53
has _. -s	32
has _. word	66
have _. ,	41
he's _. word	-94
he's got _	-29
head 1	78
head 2	32
head 3	46
head at _	39
header's _. one	61
header's two _	36
held _. word	32
high by _	-70
holding _. word	41
holding at _	44
holds _. word	27
hole _. word	-26
hole is _	-37
house _. word	-85
house is _	-27
hr 1	-23
hr 2	-20
hr 5	58
humidity was _	27
hundred by _	64
hung _. word	35
i counted _	79
i drove _	46
i have _	53
i need _	-24
i put _	33
i use _	26
i'd say _	24
i'll need _	-21
i'm _. word	52
i'm at _	71
i'm reading _	24
i've got _	32
in , _	-29
in 2	32
in 20	27
in 5	26
in 999	-42
in _. #	-50
in _. ,	-51
in _. -s	-46
in _. .	56
in a _	-40
in and _	39
in at _	119
in bed _	-55
in rm _	-47
in the _	-25
inch _. word	76
inch and _	-33
instead of _	51
into a _	23
is _. .	23
is _. one	-93
is _. unit	-21
is _. word	135
is a _	35
is missing _	21
is the _	-81
it . _	34
it _. #	121
it _. -s	-68
it _. word	51
it at _	37
it needs _	33
it says _	26
it takes _	-31
it to _	75
it took _	-57
it up _	21
it was _	-58
it with _	25
it's _. #	30
it's _. unit	-45
it's pulling _	45
its _. word	-34
k area	87
k current	32
k flow	45
k gauge	23
k length	27
k none	-20
k other	69
k pack	62
k percent	-38
k power	43
k pressure	95
k speed	-35
k temperature	24
k time	-89
k torque	22
k voltage	29
k volume	65
kg 1	22
l1 
	-55
l1 "	-40
l1 \$	-82
l1 +	57
l1 ,	26
l1 -	-25
l1 4	23
l1 8	22
l1 9	-40
l1 :	54
l1 =	23
l1 @	46
l1 a	-37
l1 about	32
l1 above	40
l1 abt	26
l1 add	51
l1 after	-107
l1 all	64
l1 allow	56
l1 also	58
l1 an	-50
l1 and	76
l1 apartment	-85
l1 are	75
l1 as	-100
l1 at	29
l1 ate	22
l1 bath	-100
l1 bay	-92
l1 be	60
l1 bed	-82
l1 bedroom	-79
l1 before	-73
l1 between	-26
l1 big	-24
l1 block	-27
l1 bottom	-27
l1 bought	84
l1 bout	50
l1 breaker	-94
l1 bring	114
l1 brought	92
l1 building	-59
l1 bus	-39
l1 buy	92
l1 came	36
l1 cat	-48
l1 catch	-25
l1 channel	-47
l1 chapter	-23
l1 circuit	-82
l1 clips	27
l1 closet	74
l1 coat	-61
l1 code	-72
l1 code's	-65
l1 come	-30
l1 correction	29
l1 counted	79
l1 cut	97
l1 dash	-28
l1 day	-95
l1 detail	-33
l1 dock	-41
l1 done	21
l1 door	-51
l1 down	81
l1 drawer	-65
l1 drill	52
l1 drops	36
l1 each	-60
l1 edge	26
l1 eleven	-48
l1 every	-37
l1 exit	-80
l1 extension	-27
l1 exterior	-50
l1 fan	111
l1 feet	-74
l1 figure	35
l1 first	-28
l1 five	-63
l1 flat	-21
l1 floor	-71
l1 found	83
l1 fourteen	-51
l1 full	59
l1 gap	74
l1 gap's	33
l1 garage	76
l1 get	117
l1 gets	20
l1 go	75
l1 got	86
l1 grab	89
l1 grade	-27
l1 had	110
l1 hang	-32
l1 has	84
l1 have	72
l1 he's	-100
l1 header's	61
l1 height	71
l1 held	35
l1 her	-29
l1 him	-46
l1 holding	45
l1 holds	30
l1 hung	54
l1 i'm	53
l1 in	-44
l1 inch	76
l1 invoice	-68
l1 is	32
l1 it	57
l1 item	-50
l1 its	39
l1 job	-25
l1 least	56
l1 leave	39
l1 leaves	69
l1 left	28
l1 leg	-42
l1 level	-95
l1 like	52
l1 line	-44
l1 local	-26
l1 loop	-42
l1 lost	-59
l1 lot	-94
l1 low	24
l1 lvl	-43
l1 mate	-44
l1 maybe	99
l1 measure	-65
l1 measured	26
l1 meter's	27
l1 mm	-60
l1 more	-28
l1 my	24
l1 need	84
l1 needs	75
l1 new	-63
l1 nineteen	-56
l1 no	-59
l1 note	-43
l1 now	32
l1 number	-159
l1 number's	-59
l1 of	-71
l1 off	21
l1 old	-75
l1 one	-25
l1 only	70
l1 open	-30
l1 opened	-47
l1 or	-32
l1 ordered	37
l1 out	62
l1 over	43
l1 p	-26
l1 page	-54
l1 plate	34
l1 plot	-28
l1 plumb	32
l1 plus	69
l1 point	29
l1 port	-33
l1 poured	36
l1 primed	-31
l1 proud	26
l1 pulling	51
l1 pulls	56
l1 put	85
l1 quarter	87
l1 r	-62
l1 rack	-29
l1 rated	49
l1 read	66
l1 reading	54
l1 replaced	57
l1 return	25
l1 rfi	-23
l1 right	-58
l1 rise	69
l1 riser	-51
l1 rm	-98
l1 ro	-32
l1 room	-93
l1 route	-35
l1 run	34
l1 running	53
l1 said	72
l1 saves	-42
l1 say	57
l1 says	51
l1 screwed	30
l1 second	-35
l1 section	-42
l1 sent	50
l1 set	87
l1 sheet	-41
l1 shelf	-23
l1 short	121
l1 shy	56
l1 side's	21
l1 since	-41
l1 sits	22
l1 so	94
l1 spacing	36
l1 spec	46
l1 static's	40
l1 step	-72
l1 still	42
l1 strong	65
l1 stuck	26
l1 suite	-39
l1 superheat	66
l1 switch	-57
l1 t	30
l1 takes	-48
l1 tape	-23
l1 temp	51
l1 ten	-21
l1 than	28
l1 that	-74
l1 the	-25
l1 then	30
l1 there	-22
l1 they're	-23
l1 thing	-42
l1 thinset	44
l1 this	-47
l1 three	28
l1 through	30
l1 throw	74
l1 tile	25
l1 till	-115
l1 to	30
l1 today	23
l1 tomorrow	55
l1 took	35
l1 top	38
l1 tread	-26
l1 turned	-60
l1 twelve	-43
l1 two	46
l1 type	-45
l1 under	78
l1 unit	-110
l1 up	80
l1 us	23
l1 use	40
l1 used	89
l1 vanity	64
l1 wall	79
l1 wanted	36
l1 wants	77
l1 was	53
l1 we're	28
l1 weighs	-23
l1 well	48
l1 were	-31
l1 what	-59
l1 whole	-59
l1 with	41
l1 within	70
l1 x	61
l1 y	28
l1 you	-30
l1 your	-48
l1 zone	-72
l1 ~	29
l1 £	-80
l1. "	-40
l1. \$	-82
l1. +	57
l1. ,	26
l1. -	-25
l1. -ed	46
l1. -ing	40
l1. -ly	72
l1. -s	28
l1. /	-37
l1. :	54
l1. =	23
l1. @	46
l1. Name	-79
l1. one	-36
l1. unit	-27
l1. ~	29
l1. £	-80
l2 	-20
l2 
	47
l2 "	37
l2 %	-46
l2 '	43
l2 (	41
l2 )	-22
l2 +	42
l2 -	35
l2 /	63
l2 1	-103
l2 10	25
l2 14	31
l2 16	30
l2 18	22
l2 24	-45
l2 34	54
l2 4	59
l2 50	39
l2 55	23
l2 555	-33
l2 6	-48
l2 60	42
l2 68	46
l2 8	-75
l2 9	53
l2 a	-95
l2 adhesive	-38
l2 all	-25
l2 already	44
l2 an	-53
l2 are	28
l2 at	-48
l2 bags	31
l2 bar	42
l2 be	56
l2 been	-24
l2 behind	21
l2 bit	-25
l2 bolts	27
l2 bottom	26
l2 box	67
l2 boxes	34
l2 breaker's	53
l2 bring	32
l2 burned	32
l2 but	-24
l2 by	-61
l2 c	32
l2 call	57
l2 calls	59
l2 came	21
l2 cartons	35
l2 change	-23
l2 changed	31
l2 charged	-85
l2 chimney	-33
l2 class	-30
l2 close	-52
l2 closer	67
l2 closet	-33
l2 comes	28
l2 coming	-46
l2 corner	28
l2 cost	-116
l2 cracked	79
l2 cut	101
l2 deep	58
l2 don't	-123
l2 done	61
l2 door	-26
l2 down	31
l2 drain	-26
l2 dryer	-43
l2 each	24
l2 edge	25
l2 eggshell	-28
l2 eight	33
l2 eighteen	23
l2 eighth	-26
l2 eighths	58
l2 elbows	28
l2 em	58
l2 end	34
l2 epoxy	-48
l2 except	-53
l2 fifteen	30
l2 fifty	-23
l2 filler	24
l2 first	62
l2 fixed	21
l2 floor	62
l2 for	-56
l2 forty	-91
l2 four	78
l2 fourteen	37
l2 friday	-59
l2 from	-91
l2 front	-52
l2 g	-32
l2 gallon	30
l2 gallons	36
l2 gap	64
l2 garage	20
l2 gate	-30
l2 gave	94
l2 get	-24
l2 gets	-23
l2 give	-32
l2 glass	56
l2 glue	22
l2 go	-26
l2 gone	23
l2 good	-24
l2 got	27
l2 gotta	59
l2 half	-76
l2 hand	30
l2 handrail	32
l2 hang	25
l2 hardware	-69
l2 has	24
l2 have	46
l2 he	-61
l2 he's	-41
l2 head	96
l2 header's	36
l2 heater	68
l2 here	-83
l2 high	-50
l2 him	-21
l2 holding	44
l2 hole	-26
l2 holes	27
l2 house	-26
l2 humidity	33
l2 hundred	31
l2 hung	27
l2 i	97
l2 i'd	34
l2 i'm	84
l2 i've	41
l2 in	-62
l2 inch	56
l2 inches	76
l2 inside	59
l2 instead	51
l2 into	23
l2 it	36
l2 its	51
l2 joist	23
l2 joists	21
l2 kit	67
l2 last	41
l2 latch	29
l2 leave	-22
l2 leg	103
l2 lengths	78
l2 level	-26
l2 lintel	21
l2 list	-24
l2 long	37
l2 loose	77
l2 low	-33
l2 main	52
l2 make	118
l2 max	23
l2 measured	-40
l2 meter	49
l2 mil	-74
l2 millimeter	37
l2 minute	-56
l2 missing	81
l2 mm	65
l2 monday	40
l2 more	34
l2 morning	22
l2 most	-90
l2 mounted	35
l2 my	-72
l2 near	-42
l2 need	63
l2 nine	-45
l2 nineteen	-51
l2 no	-83
l2 not	-74
l2 number	-68
l2 of	-58
l2 oh	-31
l2 ok	-36
l2 on	-36
l2 one	-32
l2 ones	30
l2 only	86
l2 opening	42
l2 or	41
l2 order	-63
l2 overhang	24
l2 owes	-23
l2 paid	-75
l2 paint	45
l2 patio	-39
l2 pay	-88
l2 pcs	-64
l2 permit	-55
l2 pick	70
l2 picked	41
l2 pipe	54
l2 place	40
l2 plaster	43
l2 plate	-57
l2 please	50
l2 plumb	39
l2 poly	-65
l2 psi	59
l2 put	91
l2 quarter	-98
l2 r	-79
l2 rail	22
l2 real	54
l2 red	-96
l2 return	81
l2 rise	23
l2 rod	37
l2 rolls	36
l2 room	-29
l2 rtu	-73
l2 s	20
l2 sand	-61
l2 scratch	24
l2 screw	56
l2 screws	29
l2 seam	-55
l2 second	23
l2 set	38
l2 she	-25
l2 she's	-52
l2 shelf	76
l2 shop	-43
l2 shorted	81
l2 should	54
l2 shower	-44
l2 sill	91
l2 sitting	26
l2 sixteen	49
l2 size	-71
l2 sockets	26
l2 sorry	23
l2 spec	20
l2 split	-44
l2 square	-84
l2 stair	-61
l2 stairs	-62
l2 step	68
l2 sticks	35
l2 still	-22
l2 strap	25
l2 strike	-45
l2 studs	45
l2 takes	23
l2 tank	-31
l2 tell	24
l2 ten	26
l2 tested	57
l2 that	-41
l2 that's	-26
l2 the	-60
l2 there's	-59
l2 thermostat	27
l2 thirteen	22
l2 this	-52
l2 three	84
l2 through	-42
l2 thursday	-104
l2 ticket	-29
l2 tile	38
l2 time	-37
l2 tomorrow	-71
l2 too	44
l2 top	23
l2 torqued	38
l2 total	27
l2 trap	41
l2 twelve	56
l2 twenty	83
l2 two	-56
l2 type	-78
l2 u	-49
l2 under	26
l2 v	27
l2 valve	21
l2 vent	54
l2 wall	66
l2 wall's	22
l2 walls	-38
l2 want	33
l2 was	-75
l2 waste	36
l2 we	47
l2 went	55
l2 were	96
l2 which	45
l2 white	44
l2 wide	-48
l2 will	50
l2 window	-38
l2 windows	60
l2 wire	-28
l2 x	29
l2 zero	-72
l2. "	37
l2. #	-20
l2. %	-46
l2. '	43
l2. 's	20
l2. (	41
l2. )	-22
l2. +	42
l2. -	35
l2. -ed	39
l2. -ing	26
l2. -s	32
l2. /	84
l2. 1	25
l2. letter	43
l2. n't	-91
l3 	-38
l3 '	-38
l3 )	33
l3 ,	32
l3 /	-34
l3 10	-57
l3 12	63
l3 15	62
l3 16	-59
l3 20	21
l3 24	27
l3 3	-37
l3 4	49
l3 48	29
l3 5	-33
l3 6	31
l3 ;	42
l3 ?	36
l3 @	-32
l3 a	68
l3 about	29
l3 all	-60
l3 also	-33
l3 amps	52
l3 an	67
l3 are	28
l3 at	-75
l3 bag	22
l3 bar	-40
l3 base	32
l3 basement	-28
l3 bay	80
l3 be	-40
l3 before	22
l3 between	-77
l3 black	25
l3 board	-24
l3 bottom	35
l3 boxes	-38
l3 but	-61
l3 by	39
l3 c	-32
l3 call	-66
l3 came	126
l3 change	60
l3 channel	-48
l3 circuit	50
l3 clear	69
l3 comes	-40
l3 cost	-41
l3 counter	-64
l3 cover	-35
l3 day	-37
l3 dead	-22
l3 did	-26
l3 dining	24
l3 done	24
l3 door	21
l3 door's	24
l3 down	33
l3 drop	31
l3 dropped	24
l3 dryer	43
l3 each	60
l3 edge	-21
l3 eight	77
l3 eighty	-104
l3 em	24
l3 except	-42
l3 extension	24
l3 extra	-22
l3 fan	-36
l3 feet	29
l3 first	-78
l3 five	-21
l3 flashing	33
l3 flat	-32
l3 floor	27
l3 foot	42
l3 footers	49
l3 forty	-45
l3 four	27
l3 fourteen	32
l3 friday	39
l3 fridge	33
l3 from	42
l3 front	-38
l3 ft	45
l3 gallon	22
l3 gap	89
l3 garage	-39
l3 glued	34
l3 go	27
l3 gone	68
l3 got	76
l3 guy	-53
l3 had	-40
l3 half	26
l3 hangers	50
l3 have	-30
l3 he	-68
l3 he's	-52
l3 heater	-38
l3 her	-46
l3 him	-64
l3 his	-57
l3 hole	65
l3 hood	34
l3 house	38
l3 hundred	-53
l3 hung	55
l3 i	34
l3 i'd	53
l3 i'm	46
l3 if	94
l3 in	-40
l3 inch	91
l3 inches	-46
l3 is	-60
l3 island	35
l3 it	-62
l3 it's	-43
l3 its	-64
l3 knobs	37
l3 lady	-34
l3 leg	29
l3 lengths	-31
l3 let	77
l3 level	48
l3 like	28
l3 load	-21
l3 long	25
l3 lot	-32
l3 m	-37
l3 me	37
l3 metres	30
l3 mix	29
l3 moisture	33
l3 more	93
l3 move	23
l3 must	32
l3 nailed	49
l3 near	-38
l3 need	-47
l3 needs	51
l3 new	44
l3 next	-75
l3 niche	26
l3 nine	72
l3 ninety	-41
l3 no	55
l3 nobody	-74
l3 not	-43
l3 nothing	31
l3 number	68
l3 off	-35
l3 oh	29
l3 okay	-34
l3 old	81
l3 one	-21
l3 one's	-27
l3 ones	-51
l3 only	-33
l3 order	-25
l3 ought	22
l3 out	-43
l3 outlets	-53
l3 over	50
l3 p	38
l3 paper	-34
l3 pick	39
l3 pipe	-30
l3 please	39
l3 plus	30
l3 point	-31
l3 pressure	27
l3 psi	21
l3 put	-99
l3 quarter	55
l3 r	23
l3 rack	-49
l3 rail	-65
l3 range	-21
l3 rental	-39
l3 riser	-31
l3 row	-21
l3 run	97
l3 running	-29
l3 s	29
l3 sat	-62
l3 say	52
l3 says	51
l3 screws	49
l3 second	32
l3 see	-65
l3 set	21
l3 seven	-21
l3 seventy	43
l3 she	-40
l3 sheet	-37
l3 shelf	39
l3 shelves	28
l3 side	64
l3 six	38
l3 slab	23
l3 somebody	51
l3 spacing	49
l3 stairs	33
l3 start	-36
l3 still	-28
l3 take	22
l3 tank	22
l3 tape	-31
l3 temp	45
l3 ten	-75
l3 th	-40
l3 the	38
l3 their	-55
l3 them	86
l3 they're	-46
l3 third	22
l3 thirteen	84
l3 thirty	42
l3 three	40
l3 through	-27
l3 thurs	-54
l3 thursday	24
l3 tile	45
l3 till	33
l3 times	-33
l3 to	42
l3 today	-25
l3 tomorrow	64
l3 too	27
l3 torque	24
l3 trap	-61
l3 truck	43
l3 twelve	82
l3 twenty	-22
l3 two	-26
l3 u	-28
l3 under	38
l3 unit	45
l3 up	-77
l3 us	-35
l3 used	33
l3 v	-35
l3 valve	39
l3 w	23
l3 want	23
l3 was	37
l3 water	-30
l3 we	50
l3 we're	32
l3 wednesday	26
l3 went	74
l3 when	-44
l3 white	89
l3 wide	34
l3 wood	-61
l3 wrong	-34
l3 x	73
l3 you	-76
l3. #	-38
l3. '	-38
l3. )	33
l3. ,	32
l3. -ing	55
l3. -ly	-71
l3. /	-28
l3. 1	21
l3. ;	42
l3. ?	36
l3. @	-32
l3. Name	64
l3. letter	59
l3. n't	58
l3. one	21
lb 1	57
lb 12	-53
lb 5	-31
lb 60	98
lb 999	-47
lb 9999	70
leave _. word	39
left _. word	44
leg and _	56
length figures 1	64
length figures 2	57
length implied fraction	-43
length implied mixed	-39
length l 	25
length l ,	21
length l -	-22
length l .	-57
length l a	33
length l about	75
length l abt	21
length l and	25
length l another	31
length l as	-59
length l at	63
length l back	48
length l bottom	47
length l by	-52
length l door	39
length l down	38
length l dropped	20
length l drops	36
length l every	41
length l falls	29
length l five	-44
length l from	56
length l gap	34
length l gap's	27
length l good	52
length l got	-50
length l heavy	36
length l hole	43
length l in	67
length l is	30
length l it	21
length l leave	36
length l left	23
length l level	-61
length l like	60
length l long	25
length l low	28
length l maybe	40
length l me	-71
length l need	-56
length l needs	39
length l no	-79
length l not	-70
length l of	-37
length l off	66
length l on	31
length l one	40
length l only	25
length l open	67
length l out	42
length l over	39
length l plumb	32
length l proud	26
length l ran	30
length l rise	26
length l riser	42
length l ro	25
length l says	23
length l she's	29
length l strong	65
length l take	-34
length l that	28
length l that's	-81
length l the	24
length l to	-76
length l took	-62
length l up	48
length l want	-56
length l was	47
length l whole	-59
length l within	70
length l x	26
length l. #	25
length l. ,	21
length l. -	-22
length l. -ed	62
length l. -ing	36
length l. -s	-22
length l. .	-57
length l. letter	27
length l. one	22
length l. unit	89
length l. word	40
length r 	32
length r 
	31
length r )	31
length r -	27
length r ;	-34
length r all	54
length r along	35
length r bit	62
length r bubble	-92
length r but	21
length r down	26
length r for	-37
length r from	44
length r gap	52
length r high	24
length r hole	80
length r i	31
length r i'm	-23
length r is	53
length r it	22
length r long	24
length r low	48
length r no	-84
length r now	-48
length r of	95
length r on	64
length r or	39
length r over	56
length r past	-29
length r plus	22
length r ply	32
length r proud	45
length r round	-110
length r short	21
length r shy	33
length r tall	29
length r that's	32
length r the	80
length r to	-47
length r too	36
length r toward	24
length r turn	-112
length r under	-36
length r up	27
length r wall	29
length r with	58
length r x	-48
length r. #	32
length r. 's	41
length r. )	31
length r. -	27
length r. -ed	49
length r. -ing	-44
length r. /	34
length r. 1	34
length r. ;	-34
length r. letter	-28
length r. one	-38
length r. unit	29
length r. word	35
length said fraction	140
length said mixed	24
length said whole	72
length shared fraction	36
length shared mixed	37
length shared whole	-35
length swallowed	-75
length words	31
length words round	46
lengths of _	72
letter , _	24
letter - _	-67
letter -ed _	76
letter ._ 	36
letter ._ ,	39
letter ._ .	37
letter ._ in	-38
letter ._ x	38
letter 1 _	28
letter _ #	36
letter _ ,	39
letter _ -s	-30
letter _ .	37
letter _ letter	45
letter _ unit	-23
letter _ word	-54
letter head 0	-30
letter unit _	-21
letter word _	51
level _. word	-83
level within _	51
like _. #	22
like _. ,	26
like _. word	20
load 1	-48
loop _. word	-44
lot _. word	-61
low _. unit	28
m 1	28
m 12	25
m 2	31
m 5	27
main and _	51
make it _	91
make that _	44
maybe _. word	72
me _. #	-68
me _. -s	-36
me _. word	75
me at _	-32
me up _	39
measure _. word	-68
min 1	-83
min 60	-54
missing _. word	-28
mm , _	20
mm 12	72
mm 5	40
mm 60	21
mm over _	33
more _. word	-29
more figures 5	-34
more l. word	-32
most of _	-90
n't word _	-91
need _. #	66
need _. -s	27
need _. .	51
need _. 1	39
need _. one	42
need _. unit	52
need _. word	22
needs _. -s	47
needs _. word	33
new _. unit	-54
new _. word	-72
no , _	94
no . _	-157
no _. #	84
no _. -s	-24
none 0figures 4	-62
none 1	-21
none 2	-33
none 999	28
none 9999	-41
none figures 4	-50
none figures 5	-51
none l 	53
none l 
	-62
none l \$	-82
none l +	51
none l -	-20
none l .	26
none l 9	-40
none l :	56
none l @	30
none l about	39
none l add	39
none l after	-73
none l all	61
none l an	-74
none l and	46
none l another	-24
none l apartment	-85
none l are	70
none l at	-22
none l bath	-103
none l bay	-92
none l be	53
none l bed	-83
none l bedroom	-81
none l before	-77
none l between	-57
none l big	-24
none l bottom	-68
none l bought	84
none l breaker	-36
none l bring	109
none l building	-59
none l bus	-39
none l buy	85
none l by	47
none l cat	-48
none l catch	-25
none l channel	-47
none l chapter	-23
none l circuit	-82
none l coat	-61
none l code	-74
none l code's	-65
none l counted	80
none l cut	85
none l dash	-28
none l day	-96
none l deep	-25
none l detail	-33
none l dock	-41
none l door	-71
none l down	63
none l eleven	-48
none l every	-46
none l exit	-80
none l extension	-27
none l exterior	-50
none l first	-39
none l five	-26
none l floor	-86
none l found	83
none l fourteen	-51
none l from	-20
none l full	59
none l garage	76
none l get	139
none l go	66
none l good	-32
none l got	121
none l grab	66
none l grade	-27
none l had	110
none l half	-31
none l has	84
none l have	65
none l he's	-57
none l header's	61
none l him	-29
none l hung	54
none l in	-54
none l invoice	-68
none l is	29
none l it's	-29
none l its	28
none l job	-25
none l leaves	69
none l leg	-57
none l level	-51
none l line	-45
none l local	-26
none l long	-22
none l loop	-44
none l lot	-78
none l mate	-44
none l maybe	83
none l me	26
none l missing	-34
none l my	24
none l need	100
none l needs	57
none l new	-38
none l nineteen	-56
none l no	65
none l not	56
none l note	-43
none l now	90
none l number	-160
none l number's	-59
none l oh	-29
none l old	-75
none l one	-54
none l only	55
none l or	-45
none l ordered	33
none l out	47
none l p	-26
none l page	-54
none l plot	-28
none l point	29
none l port	-33
none l pulling	50
none l put	76
none l r	-62
none l rack	-29
none l rated	45
none l read	61
none l reading	44
none l replaced	56
none l return	24
none l rfi	-23
none l right	-58
none l riser	-77
none l rm	-76
none l room	-77
none l route	-35
none l said	66
none l saves	-42
none l say	46
none l says	34
none l second	-35
none l section	-42
none l sent	50
none l set	83
none l sheet	-47
none l shelf	-28
none l short	120
none l since	-41
none l so	83
none l spacing	36
none l square	-36
none l static's	40
none l step	-72
none l suite	-39
none l switch	-57
none l t	30
none l take	27
none l takes	-52
none l temp	43
none l ten	-58
none l that	-90
none l that's	42
none l the	-69
none l then	40
none l there	-24
none l there's	32
none l thing	-42
none l through	22
none l till	-84
none l to	79
none l tomorrow	53
none l took	61
none l tread	-39
none l truck	-38
none l turned	-60
none l twelve	-61
none l two	38
none l type	-57
none l under	66
none l unit	-110
none l up	46
none l used	89
none l wall	71
none l want	82
none l wants	116
none l were	-63
none l with	24
none l x	52
none l you	-30
none l zone	-72
none l. #	46
none l. \$	-82
none l. 's	102
none l. +	51
none l. -	-20
none l. -ed	28
none l. -ly	57
none l. .	26
none l. /	-54
none l. :	56
none l. @	30
none l. Name	-80
none l. letter	-27
none l. one	-82
none l. unit	-20
none l. word	-39
none more	-37
none none decimal	23
none none whole	-22
none oh	-67
none parts	25
none r )	-25
none r -	-60
none r 10	35
none r 12	34
none r 2	46
none r 3	-53
none r 4	25
none r 555	-26
none r 9	-21
none r :	-76
none r a	-55
none r about	-21
none r above	34
none r across	52
none r adds	-59
none r aff	41
none r after	-43
none r all	-34
none r already	37
none r an	-79
none r are	23
none r at	23
none r baths	26
none r batts	-27
none r below	21
none r blank	32
none r blocks	35
none r boards	60
none r bolts	30
none r bottom	23
none r bracket	36
none r brackets	69
none r brick	45
none r broken	58
none r bucks	-148
none r but	21
none r by	26
none r can	-34
none r centers	40
none r centres	57
none r cents	-70
none r chance	-30
none r clamps	21
none r clips	26
none r come	-47
none r corner	30
none r dead	42
none r deep	64
none r do	49
none r dollars	-99
none r doors	104
none r double	48
none r down	30
none r drops	57
none r elbows	43
none r euro	-124
none r even	65
none r extra	52
none r five	-35
none r flat	55
none r fourteen	-48
none r gets	-53
none r go	-85
none r goes	-36
none r got	-25
none r had	-56
none r hand	-75
none r hangers	41
none r has	-69
none r here	37
none r high	33
none r hinge	44
none r hinges	50
none r hole	-125
none r hung	36
none r i'm	-20
none r if	31
none r is	-78
none r ish	-44
none r it	-38
none r joist	32
none r k	-83
none r kinds	-54
none r knobs	33
none r larch	-27
none r last	-47
none r layer	-99
none r layers	47
none r left	54
none r long	66
none r man	-36
none r max	21
none r more	89
none r needs	-61
none r new	50
none r nine	28
none r ninety	-42
none r no	55
none r nos	52
none r nothing	-59
none r now	31
none r number	50
none r o'clock	-88
none r oc	45
none r of	-44
none r off	65
none r old	41
none r on	-28
none r or	-51
none r outlets	80
none r over	-45
none r panel	-133
none r panels	29
none r part	-83
none r per	76
none r pickets	54
none r piers	34
none r plate	47
none r post	36
none r posts	26
none r potato	-54
none r pulls	51
none r quid	-71
none r round	52
none r s	24
none r says	-60
none r screw	25
none r screws	55
none r second	-69
none r sharp	-64
none r shelf	-46
none r shelves	26
none r short	33
none r should	25
none r side	-28
none r spare	49
none r still	33
none r straps	51
none r stroke	-34
none r studs	40
none r ten	42
none r that	-60
none r the	-57
none r they	25
none r thick	46
none r thing	-25
none r things	-73
none r thirty	45
none r this	-44
none r tile	81
none r tiles	44
none r times	-119
none r to	-42
none r tomorrow	-60
none r treads	92
none r twenty	42
none r two	-29
none r used	33
none r wants	-53
none r was	-76
none r wax	38
none r way	-99
none r ways	-71
none r we	-39
none r went	29
none r when	27
none r which	37
none r white	41
none r wide	65
none r windows	49
none r wire	49
none r wood	-28
none r wrongs	-38
none r x	72
none r. 's	29
none r. )	-25
none r. -	-60
none r. -ing	37
none r. -s	33
none r. :	-76
none r. Name	-35
none r. n't	-66
none r. one	-43
none swallowed	35
none words round	30
not _. word	-54
note _. word	-43
now _. .	36
now _. word	-58
now it's _	34
number _. unit	-25
number _. word	-119
number is _	-66
of _. 's	-33
of _. ,	73
of _. -s	37
of _. .	23
of _. letter	-76
of _. unit	-36
of _. word	-56
of a _	26
of plumb _	27
of the _	63
of those _	48
off about _	21
off at _	-64
off by _	90
off for _	-20
oh _. #	-25
oh l. unit	-35
oh r. #	-49
oh r. word	-26
oh unit word	-31
oh word #	-41
oh word word	34
old _. word	-41
on , _	49
on . _	66
on _. #	-48
on _. -s	56
on a _	113
on all _	59
on at _	-36
on circuit _	-26
on level _	-24
on the _	-51
one , _	-41
one - _	-33
one -s _	72
one ._ -	-25
one ._ and	36
one ._ by	53
one ._ for	41
one ._ on	-43
one ._ one	-25
one _ -	-25
one _ letter	32
one _ one	-66
one _ unit	44
one _. #	-35
one and _	-35
one at _	-35
one by _	61
one head none	-33
one in _	-44
one one _	-59
one two _	-44
one unit _	32
one word _	-24
open _. .	-29
open at _	-75
opening is _	35
or _. #	-44
or take _	29
order _. #	-28
order _. -s	-66
order _. .	49
order _. word	73
ordered _. word	33
other figures 3	36
other l. word	63
other r. word	21
other said whole	54
out _. #	67
out _. ,	28
out at _	-32
over _. ,	28
over _. .	32
over _. word	29
pack 1	-47
pack figures 1	55
pack figures 2	33
pack l ,	28
pack l .	34
pack l about	-75
pack l and	96
pack l get	21
pack l got	55
pack l grab	21
pack l he's	-35
pack l it	34
pack l me	65
pack l missing	23
pack l need	58
pack l no	-47
pack l of	-88
pack l so	39
pack l with	40
pack l y	28
pack l. ,	28
pack l. -ed	32
pack l. -ing	42
pack l. -s	42
pack l. .	34
pack l. letter	30
pack l. one	53
pack l. unit	-41
pack l. word	54
pack parts	44
pack r 	-52
pack r ,	43
pack r .	28
pack r ;	21
pack r and	29
pack r for	28
pack r is	37
pack r of	40
pack r over	26
pack r to	-54
pack r. #	-52
pack r. 's	-28
pack r. ,	43
pack r. -ed	30
pack r. -s	24
pack r. .	28
pack r. ;	21
pack r. word	76
pack said fraction	44
pack said whole	63
pack shared whole	-27
pack words	24
pack words round	67
page _. word	-27
pair 1	83
parts # #	29
parts 's ,	39
parts , .	42
parts -ed unit	22
parts -ed word	52
parts -ing word	26
parts -s ,	29
parts -s letter	-30
parts l. 's	34
parts l. -	21
parts l. -ed	54
parts l. -ing	48
parts l. one	-28
parts l. word	36
parts one -s	-33
parts r. #	58
parts r. 's	41
parts r. )	36
parts r. -	-34
parts r. -ed	29
parts r. -s	-62
parts r. unit	45
parts r. word	33
parts unit word	59
parts word #	72
parts word 's	36
parts word ,	-23
parts word letter	35
parts word word	49
past _. #	-27
past _. word	37
percent figures 2	144
percent l 	-95
percent l at	72
percent l is	-27
percent l was	28
percent l. #	-95
percent l. unit	37
percent parts	39
percent r 	-39
percent r ,	31
percent r and	35
percent r moisture	35
percent r of	-60
percent r on	46
percent r so	25
percent r waste	22
percent r. #	-39
percent r. ,	31
percent r. word	-41
percent said decimal	32
percent said whole	-28
percent words round	-79
pick up _	70
picked up _	41
plot _. word	-28
plus _. word	61
power figures 4	22
power l 	23
power l. #	23
power r. word	25
power said whole	40
pressure figures 4	32
pressure l. 's	30
pressure l. word	46
pressure parts	21
pressure r ,	20
pressure r way	21
pressure r. ,	20
pressure r. word	70
pressure said decimal	20
pressure said whole	84
pressure words	23
pressure words round	32
psi 9999	32
pt 1	33
put _. -s	30
put _. unit	98
put down _	88
put in _	86
qt 1	90
quarter _. word	87
quarter and _	77
quarter no _	-75
quarter to _	-122
r - _	-66
r _. word	-38
r1 )	-29
r1 +	32
r1 -	-44
r1 1	30
r1 10	36
r1 12	49
r1 2	53
r1 3	-42
r1 4	26
r1 555	-49
r1 :	-60
r1 @	28
r1 a	-41
r1 above	34
r1 across	60
r1 adds	-59
r1 aff	42
r1 along	40
r1 an	-79
r1 anchors	23
r1 apart	27
r1 are	26
r1 at	26
r1 away	32
r1 back	86
r1 bad	41
r1 bag	-25
r1 baths	26
r1 batts	-27
r1 because	21
r1 below	35
r1 between	90
r1 bit	47
r1 blank	32
r1 blocks	36
r1 board	47
r1 boards	28
r1 bolts	30
r1 both	-31
r1 bottom	30
r1 box	38
r1 bracket	36
r1 brass	88
r1 brick	45
r1 broken	61
r1 bubble	-92
r1 bucks	-148
r1 by	20
r1 can	-34
r1 centers	43
r1 centres	57
r1 cents	-70
r1 chance	-50
r1 clamps	22
r1 clear	23
r1 clips	26
r1 cold	22
r1 come	-45
r1 coming	92
r1 corner	44
r1 couplings	43
r1 covers	31
r1 cracked	83
r1 cut	-27
r1 dead	49
r1 deep	66
r1 do	56
r1 dollars	-99
r1 doors	104
r1 double	48
r1 drops	57
r1 elbow	43
r1 elbows	44
r1 euro	-124
r1 even	65
r1 extra	67
r1 fall	88
r1 flat	55
r1 floor	28
r1 fourteen	-48
r1 gap	53
r1 get	25
r1 gets	-51
r1 go	-85
r1 goes	-36
r1 good	21
r1 got	-25
r1 had	-56
r1 hand	-75
r1 hangers	43
r1 has	-69
r1 have	59
r1 he	-21
r1 heater	45
r1 heavy	27
r1 here	37
r1 high	54
r1 hinge	44
r1 hinges	57
r1 hole	-76
r1 i	31
r1 i'll	37
r1 i'm	-27
r1 is	-87
r1 ish	-44
r1 joist	32
r1 k	-83
r1 kinds	-54
r1 kitchen	-24
r1 knobs	33
r1 larch	-27
r1 last	-47
r1 late	-51
r1 layer	-99
r1 layers	47
r1 left	67
r1 long	75
r1 low	27
r1 main	-23
r1 man	-36
r1 mate	-23
r1 max	22
r1 maybe	27
r1 mesh	27
r1 moisture	35
r1 more	74
r1 needs	-59
r1 new	50
r1 nine	39
r1 ninety	-42
r1 no	-29
r1 nos	52
r1 nothing	-78
r1 notice	-33
r1 number	50
r1 o'clock	-88
r1 oc	47
r1 off	52
r1 on	36
r1 outlets	80
r1 outside	47
r1 panel	-87
r1 panels	29
r1 part	-83
r1 past	-39
r1 per	79
r1 pickets	54
r1 piers	34
r1 pipe	31
r1 plate	47
r1 plates	40
r1 plus	26
r1 ply	-60
r1 pole	-128
r1 post	36
r1 posts	26
r1 potato	-54
r1 proud	45
r1 pulls	51
r1 put	-32
r1 quarter	-91
r1 quid	-71
r1 reducer	34
r1 right	23
r1 rough	39
r1 round	-91
r1 s	24
r1 says	-60
r1 screw	25
r1 screws	63
r1 second	-69
r1 sharp	-64
r1 she	-38
r1 shelf	-38
r1 shelves	26
r1 short	44
r1 should	25
r1 shy	33
r1 side	-27
r1 since	-36
r1 slab	56
r1 so	33
r1 spacer	42
r1 spare	58
r1 static	28
r1 still	35
r1 straps	51
r1 stroke	-34
r1 studs	42
r1 tall	46
r1 ten	42
r1 that	-38
r1 the	-31
r1 there	25
r1 thick	52
r1 thing	-25
r1 things	-73
r1 thirty	41
r1 tile	80
r1 tiles	44
r1 times	-133
r1 tomorrow	-53
r1 too	34
r1 top	58
r1 total	48
r1 toward	24
r1 traps	24
r1 treads	92
r1 trim	29
r1 turn	-114
r1 twenty	42
r1 under	-24
r1 up	28
r1 used	40
r1 wall	39
r1 wants	-53
r1 was	-76
r1 waste	30
r1 wax	38
r1 way	-21
r1 ways	-71
r1 wednesday	47
r1 went	31
r1 when	29
r1 where	24
r1 which	39
r1 white	41
r1 wide	68
r1 windows	49
r1 wire	50
r1 wood	-28
r1 wrongs	-38
r1. )	-29
r1. +	32
r1. -	-44
r1. -ed	28
r1. 1	39
r1. :	-60
r1. @	28
r1. Name	-27
r1. n't	-66
r1. one	-41
r1. unit	21
r2 
	42
r2 "	24
r2 #	-54
r2 &	43
r2 (	-26
r2 ,	22
r2 /	-21
r2 0142	-34
r2 1	35
r2 100	69
r2 11	37
r2 12	121
r2 120	71
r2 13	27
r2 15	40
r2 18	-30
r2 20	-36
r2 35	63
r2 36	37
r2 38	-68
r2 40	29
r2 6	-40
r2 7	-36
r2 8	26
r2 :	-72
r2 a	-62
r2 about	-36
r2 add	24
r2 also	-61
r2 are	26
r2 around	38
r2 ask	62
r2 b	-42
r2 back	-46
r2 be	61
r2 beads	46
r2 bedroom	-45
r2 before	-65
r2 behind	21
r2 between	-38
r2 bolts	40
r2 box	39
r2 boxes	31
r2 brackets	-30
r2 but	24
r2 buy	32
r2 by	-31
r2 c	-42
r2 came	-76
r2 can	47
r2 can't	-47
r2 cap	58
r2 casing	30
r2 caulk	72
r2 center	71
r2 changed	25
r2 code	40
r2 coffee	-65
r2 coming	-81
r2 covers	-34
r2 cracked	70
r2 crown	-52
r2 cut	68
r2 day	-24
r2 do	21
r2 doors	-84
r2 down	-116
r2 each	64
r2 eight	20
r2 elbows	22
r2 eleven	-69
r2 em	111
r2 end	54
r2 enough	-53
r2 epoxy	-26
r2 fan	-22
r2 fifty	-80
r2 filters	48
r2 fine	51
r2 five	-107
r2 foam	-77
r2 foot	-58
r2 footers	52
r2 for	55
r2 forty	54
r2 fourteen	62
r2 fridays	-56
r2 gang	-34
r2 get	-38
r2 glue	-54
r2 glued	27
r2 go	42
r2 gone	23
r2 got	68
r2 grade	35
r2 gravel	92
r2 green	24
r2 ground	-33
r2 grout	40
r2 half	67
r2 hang	44
r2 hangers	54
r2 has	71
r2 he's	-30
r2 high	-35
r2 hinge	-55
r2 hinges	21
r2 hole	-31
r2 hour	-79
r2 house	53
r2 hundred	32
r2 hung	53
r2 i'll	53
r2 i've	93
r2 if	-34
r2 inch	40
r2 is	-20
r2 it	23
r2 it's	23
r2 latch	46
r2 leave	29
r2 left	36
r2 lift	-62
r2 like	-21
r2 lime	43
r2 low	21
r2 maybe	-72
r2 me	-61
r2 missing	42
r2 monday	-30
r2 must	-23
r2 my	27
r2 nails	136
r2 need	-26
r2 new	-28
r2 night	-57
r2 nine	-103
r2 ninety	86
r2 no	36
r2 noon	-46
r2 not	50
r2 nothing	-33
r2 now	27
r2 nuts	21
r2 of	34
r2 ok	48
r2 old	46
r2 on	48
r2 one	-74
r2 or	24
r2 order	-25
r2 outlets	45
r2 over	-35
r2 panel	22
r2 paper	-37
r2 plaster	73
r2 plate	32
r2 plates	29
r2 plus	20
r2 pound	27
r2 primer	132
r2 pump	56
r2 put	52
r2 quarter	34
r2 r	27
r2 rest	60
r2 return	39
r2 ring	64
r2 s	-34
r2 same	27
r2 sand	33
r2 satin	41
r2 sent	22
r2 set	31
r2 seven	-39
r2 she	30
r2 she's	61
r2 sheets	-39
r2 shims	98
r2 short	46
r2 should	-20
r2 side	37
r2 silicone	22
r2 site	21
r2 six	58
r2 sixteen	52
r2 sixty	40
r2 so	-38
r2 spare	-38
r2 spec	21
r2 spring	-21
r2 still	-42
r2 street	-33
r2 supposed	28
r2 than	33
r2 that	-35
r2 them's	-32
r2 then	-20
r2 there	37
r2 there's	-48
r2 these	42
r2 they	-23
r2 they're	71
r2 thing	-74
r2 thinset	38
r2 thirty	51
r2 those	-84
r2 thursday	-40
r2 tied	29
r2 tile	28
r2 tomorrow	23
r2 top	-22
r2 treads	-33
r2 trim	56
r2 trips	-22
r2 truck	32
r2 tub	31
r2 twenty	59
r2 under	58
r2 us	-109
r2 vinyl	31
r2 w	20
r2 wall	26
r2 want	50
r2 wants	-52
r2 was	52
r2 water	33
r2 way	-26
r2 we're	-26
r2 white	52
r2 window	-56
r2 wire	-60
r2 with	28
r2 work	-29
r2 works	-41
r2 wrong	49
r2 x	68
r2 y	48
r2. "	24
r2. &	43
r2. (	-26
r2. ,	22
r2. -ing	22
r2. -ly	21
r2. /	22
r2. 1	26
r2. :	-72
r2. Name	-78
r2. letter	25
r2. unit	47
r3 "	-29
r3 %	69
r3 '	-89
r3 (	49
r3 /	21
r3 10	26
r3 12	30
r3 14	-46
r3 2.4	-25
r3 24	44
r3 3	34
r3 5	111
r3 6	-36
r3 65	-28
r3 8	40
r3 9	-38
r3 :	-32
r3 a	-28
r3 air	56
r3 already	53
r3 another	26
r3 apart	-47
r3 are	33
r3 around	-47
r3 at	66
r3 back	-63
r3 bad	-60
r3 bag	-48
r3 bags	22
r3 bath	75
r3 be	32
r3 before	-51
r3 behind	59
r3 bit	40
r3 black	72
r3 blue	-52
r3 board	-43
r3 boards	62
r3 bone	-32
r3 box	59
r3 boxes	22
r3 bracket	56
r3 brackets	-98
r3 broken	77
r3 bucket	24
r3 bulbs	46
r3 but	25
r3 buzzer	-50
r3 can	35
r3 cap	28
r3 clips	125
r3 close	-34
r3 closet	56
r3 cm	31
r3 color	-68
r3 corner	42
r3 cover	48
r3 crack	-26
r3 cracked	-54
r3 cut	-36
r3 deck	32
r3 did	-22
r3 done	34
r3 down	48
r3 drain	41
r3 drawer	-44
r3 east	-61
r3 edge	45
r3 eggshell	47
r3 eight	-22
r3 eighths	-25
r3 end	-45
r3 every	21
r3 extra	-38
r3 far	58
r3 fault	-25
r3 feet	72
r3 fifteen	37
r3 fifty	50
r3 fine	30
r3 finish	-33
r3 first	-94
r3 flapper	-32
r3 flashing	26
r3 flat	55
r3 floor	30
r3 flue	36
r3 foam	24
r3 foot	77
r3 form	-35
r3 forty	26
r3 from	-63
r3 ft	30
r3 gang	70
r3 gap	56
r3 garage	-29
r3 glass	28
r3 go	24
r3 goes	54
r3 gone	49
r3 good	-71
r3 got	56
r3 ground	23
r3 guy	-46
r3 guys	-55
r3 half	-39
r3 hangers	96
r3 he	-47
r3 her	71
r3 hinge	26
r3 holes	48
r3 hundred	-35
r3 hung	39
r3 i'll	-39
r3 i'm	-74
r3 in	-49
r3 inch	32
r3 inches	66
r3 is	-51
r3 it's	29
r3 kit	45
r3 kitchen	-32
r3 l	41
r3 last	-52
r3 leave	30
r3 left	44
r3 leg	53
r3 legs	24
r3 level	27
r3 lid	25
r3 lift	-46
r3 like	-24
r3 line	36
r3 lot	-63
r3 m	-25
r3 meter	26
r3 middle	50
r3 min	-42
r3 minutes	-53
r3 missing	-82
r3 monday	-21
r3 more	-30
r3 morning	-57
r3 mud	22
r3 must	-36
r3 my	39
r3 need	52
r3 ninety	-51
r3 not	-38
r3 now	-61
r3 of	42
r3 off	-24
r3 old	-28
r3 on	-61
r3 one	38
r3 opening	27
r3 other	-29
r3 out	121
r3 outside	52
r3 over	-53
r3 paint	56
r3 panel	47
r3 panels	72
r3 parts	23
r3 plaster	22
r3 plumb	25
r3 point	22
r3 porch	-55
r3 put	-37
r3 quarter	36
r3 radio	-89
r3 ran	75
r3 range	-34
r3 right	-39
r3 ring	28
r3 roll	-39
r3 room	-38
r3 runs	-37
r3 s	26
r3 safe	56
r3 said	25
r3 says	45
r3 screens	-46
r3 screw	-32
r3 screws	-26
r3 seal	27
r3 second	-53
r3 seventy	64
r3 sheet	-23
r3 sheets	28
r3 shimmed	-54
r3 short	54
r3 shut	-25
r3 side	-34
r3 sill	42
r3 six	-40
r3 sixteen	72
r3 sixty	48
r3 so	-53
r3 somebody	-22
r3 spare	24
r3 square	-20
r3 steps	43
r3 sticks	-32
r3 stone	-44
r3 store	36
r3 stripped	26
r3 stud	55
r3 studs	63
r3 supply	26
r3 switch	35
r3 take	75
r3 tap	60
r3 tape	96
r3 ten	-53
r3 them	28
r3 there	-23
r3 thermostat	-63
r3 they	-57
r3 they're	22
r3 thing	-41
r3 thirty	-29
r3 those	30
r3 through	-70
r3 tight	27
r3 tile	27
r3 today	-84
r3 told	-52
r3 tomorrow	21
r3 took	37
r3 top	39
r3 tread	-77
r3 tub	74
r3 twenty	52
r3 under	-28
r3 us	25
r3 use	65
r3 used	-45
r3 van	46
r3 vent	-24
r3 wall	-40
r3 want	40
r3 wanted	35
r3 wants	34
r3 washer	-31
r3 waste	37
r3 water	-26
r3 way	70
r3 we're	44
r3 week	-62
r3 were	-45
r3 white	-30
r3 will	37
r3 wire's	45
r3 wrong	-33
r3 x	58
r3. "	-29
r3. %	69
r3. '	-89
r3. 's	31
r3. (	49
r3. -ed	53
r3. -ing	-31
r3. /	22
r3. 1	61
r3. :	-32
r3. Name	-26
r3. letter	34
r3. one	39
r3. word	-22
ran _. -s	60
rated _. word	32
read _. word	34
reading _. word	48
reads _. #	43
rfi _. word	-23
right side _	62
ring and _	33
rise _. word	56
rm _. word	-30
ro _. letter	-32
roll 1	42
roll 5	42
room _. word	-86
route _. word	-35
rtu - _	-73
rule 	-22
rule eachOf	125
rule pair	120
rule quantity/decimal	48
rule quantity/feet-inches	-46
rule quantity/fraction+taken-back	34
rule quantity/mixed	35
rule quantity/mixed+taken-back	37
rule quantity/parenthesis	-46
rule quantity/qty	47
rule quantity/times	83
rule range	20
run is _	33
said _. #	43
sand and _	-53
saves _. #	-42
say _. word	47
says _. one	-50
says _. word	73
sec 2	-54
second _. word	-32
section _. #	-34
sent _. word	38
set 1	-26
set _. word	82
seven , _	-41
she's _. word	29
sheet 1	43
sheet 12	25
sheet 5	27
sheet _. -s	-35
sheet a _	-60
shelf at _	65
short _. #	80
short _. word	42
shorted us _	81
should be _	54
side , _	-27
side _. word	27
sits _. word	22
sitting at _	21
six _. one	-30
six and _	-80
six at _	22
six by _	65
six no _	30
six of _	-51
sixteen by _	48
size 60	29
size 99	42
size more	-28
so _. word	66
so get _	55
so grab _	37
so that's _	-46
so there's _	22
spacing _. word	36
speed r. word	-53
speed said whole	-35
speed words round	-62
sq ft 999	52
square feet _	-71
stick 1	29
sticks out _	26
strong _. #	49
studs at _	22
superheat _. ,	66
swallowed # word	89
swallowed 's word	43
swallowed -s #	41
swallowed l. #	-41
swallowed l. -ing	32
swallowed l. -s	21
swallowed l. one	58
swallowed l. unit	-63
swallowed l. word	-37
swallowed one #	61
swallowed r. #	42
swallowed r. -s	-35
swallowed r. one	-80
swallowed r. unit	-39
swallowed round 's word	76
swallowed round l. 's	76
swallowed round l. one	-29
swallowed round r. #	23
swallowed round r. one	24
swallowed round r. word	-41
swallowed round unit word	-66
swallowed round word word	-33
swallowed unit word	-63
swallowed word -s	-35
swallowed word word	-30
take _. #	-21
temp _. word	33
temperature figures 1	28
temperature figures 2	-22
temperature l was	27
temperature r and	26
temperature said whole	24
temperature words	56
ten _. #	33
ten _. word	-34
that , _	-27
that _. -s	-36
that _. word	-53
that leaves _	69
that's _. -s	72
that's _. word	-28
that's a _	42
the _. #	40
the _. -s	53
the _. one	-52
the _. unit	-109
the _. word	-32
the back _	-63
the big _	-24
the bottom _	-28
the first _	-29
the garage _	76
the house _	67
the last _	27
the left _	-104
the meter's _	27
the new _	-55
the number _	-35
the old _	-54
the other _	25
the right _	-58
the second _	-25
the twelve _	-47
the wall _	35
the whole _	-59
then _. word	-41
there by _	-42
there is _	29
there's _. -s	-55
there's _. unit	23
there's _. word	26
they sent _	48
they want _	-31
they're _. word	-22
thirty by _	34
this _. word	-37
those _. -s	33
three _. unit	40
tile and _	21
till _. word	-74
time figures 1	47
time l in	-68
time l it	125
time l. 's	-41
time l. unit	-25
time l. word	-65
time parts	-43
time r and	-62
time r behind	-75
time r i	-44
time r late	-51
time r notice	-33
time r old	-40
time r on	55
time r to	104
time r. letter	-41
time r. unit	-44
time r. word	-63
time said fraction	-54
time said whole	-81
time saves _	-42
time words	-62
time words round	-47
to _. #	24
to _. ,	51
to _. .	69
to about _	-45
to be _	29
to cut _	23
to square _	-32
today , _	40
ton 1	-58
ton 5	37
took _. -s	97
took me _	-40
top _. word	53
torque said whole	22
torqued to _	38
truck _. word	-38
tub 1	41
tube 1	64
twelve _. #	-52
twenty by _	75
two _. #	37
two _. unit	20
two and _	-28
two by _	85
type _. word	-36
u %	-38
u A	24
u C	22
u V	29
u W	35
u bar	21
u box	59
u bucket	30
u bundle	-60
u can	80
u carton	-27
u cartridge	26
u case	75
u cm	66
u coat	20
u cu yd	25
u cup	-60
u day	-44
u gal	40
u inWC	24
u kg	32
u load	-48
u m	74
u mA	27
u min	-35
u mm	72
u none	-20
u ohm	27
u pack	-47
u pair	99
u psi	46
u pt	33
u qt	92
u roll	78
u sec	-54
u set	-22
u sheet	74
u sq ft	68
u sq m	27
u stick	41
u ton	-29
u tub	43
u tube	75
u week	55
u yd	-51
u year	-119
under _. word	27
unit 's _	30
unit + _	23
unit -ed _	-54
unit -ly _	27
unit -s _	41
unit ._ ,	-35
unit ._ -	-27
unit ._ .	38
unit ._ and	43
unit ._ hole	44
unit ._ is	-41
unit ._ of	94
unit ._ on	-47
unit ._ so	66
unit ._ stroke	-34
unit ._ to	-42
unit ._ x	54
unit 1 _	39
unit _ ,	-35
unit _ -	-27
unit _ -ing	41
unit _ -s	-59
unit _ .	38
unit _ /	48
unit _ one	-27
unit _ unit	22
unit _. word	-68
unit head 0	-59
unit unit _	-22
units 0	-89
units 1	65
units 2	42
up _. word	49
up at _	31
up by _	-88
up to _	71
us _. -s	-72
use _. word	34
used _. word	56
vanity _. word	64
voltage figures 2	30
voltage l 	45
voltage l. #	45
voltage l. unit	39
voltage l. word	-28
voltage parts	23
voltage r 	24
voltage r .	23
voltage r at	25
voltage r. #	24
voltage r. .	23
voltage r. 1	34
voltage r. word	51
voltage said decimal	23
volume figures 1	63
volume l a	43
volume l about	21
volume l feet	-71
volume l me	24
volume l. unit	-40
volume l. word	123
volume parts	34
volume r and	-26
volume r is	-45
volume r of	64
volume r. unit	31
volume r. word	36
volume said whole	56
volume words	22
volume words round	48
w (	-46
w ( count	-47
w -	30
w - temperature	30
w 1	50
w 1 none	38
w 1 pack	21
w 1 volume	49
w 1.2	21
w 10	39
w 10 length	38
w 10 none	47
w 10 percent	20
w 100	-45
w 11 length	59
w 11 none	-48
w 12 gauge	21
w 12 length	23
w 12 percent	36
w 120	77
w 120 none	52
w 1200	75
w 1200 none	74
w 121	39
w 121 none	34
w 14 length	42
w 140 none	-31
w 15 length	-24
w 150	62
w 150 none	59
w 17	27
w 17 length	21
w 18	64
w 18 none	64
w 19	65
w 19 none	21
w 19 percent	31
w 2 length	67
w 2 none	-20
w 2.1	-105
w 2.4	28
w 2.4 none	27
w 20 none	-22
w 200 current	71
w 200 none	-71
w 204	-31
w 204 none	-31
w 22 none	-35
w 24 length	-54
w 24 none	38
w 24 time	81
w 240	-25
w 240 none	-45
w 240 voltage	25
w 250	71
w 26	53
w 26 none	52
w 27	-40
w 27 none	-43
w 28	-26
w 28 none	-35
w 3	21
w 3 count	22
w 3 length	66
w 3.1	60
w 3.2	-34
w 30 current	27
w 30 none	20
w 300	-38
w 300 none	29
w 31	-48
w 31 length	30
w 31 none	-72
w 310	-42
w 310 none	-42
w 32 none	36
w 34	-29
w 34 none	-32
w 35	61
w 35 length	21
w 35 none	41
w 36	73
w 36 none	63
w 38	43
w 38 none	29
w 4 length	100
w 4 weight	-21
w 40	-55
w 40 none	-65
w 400	-26
w 400 none	-29
w 41	38
w 42	26
w 42 none	26
w 44	-29
w 44 none	-33
w 4471	-80
w 4471 none	-80
w 45	38
w 48	82
w 48 none	76
w 5 length	-35
w 50	-26
w 50 none	35
w 55	33
w 55 none	32
w 555	-74
w 555 none	-74
w 560	33
w 58	30
w 6 length	-27
w 6 pack	30
w 60	45
w 60 none	37
w 600	22
w 600 none	21
w 61	55
w 61 none	54
w 64	26
w 65	21
w 65 none	21
w 68	41
w 68 none	35
w 7	-52
w 7 length	38
w 7 none	-110
w 70	45
w 70 none	44
w 7008	-38
w 7008 none	-38
w 72	71
w 72 none	68
w 75	22
w 77	-90
w 8	29
w 8 length	65
w 80	59
w 80 none	56
w 83	-50
w 84	-37
w 84 none	-38
w 85	-53
w 88	-63
w 88 none	-63
w 9	20
w 9 length	45
w 90	31
w 900	54
w 900 none	53
w 92	45
w 96	34
w a	-40
w a length	-29
w a none	99
w a pack	-73
w a percent	-89
w a time	22
w a volume	-23
w an	33
w an length	57
w an time	22
w cuatro	41
w dos	26
w dos pack	26
w dozen	-99
w eight none	44
w eight time	-53
w eight weight	-99
w eighteen	29
w eighteen length	35
w eighth	23
w eighth length	23
w eleven	40
w eleven length	47
w eleven pack	23
w fifteen length	34
w fifteen none	29
w fifty	43
w fifty length	25
w fifty weight	40
w five pack	40
w five time	-74
w five weight	-21
w forty	21
w forty angle	34
w forty length	27
w forty none	25
w forty percent	-24
w forty time	-80
w forty weight	67
w four length	121
w four none	-27
w four pack	28
w four weight	29
w half	30
w half length	72
w half pack	32
w half time	-55
w hundred	51
w hundred length	25
w hundred none	40
w inch	-34
w inch length	-34
w nine area	20
w nine pack	24
w nineteen	-39
w nineteen none	-74
w nineteen percent	60
w ninety length	24
w ninety none	-38
w ninety weight	-27
w one none	-32
w one pack	111
w one time	-86
w one volume	24
w point	64
w point none	60
w qty	47
w qty count	47
w quarter	-144
w quarter length	-144
w seven	-30
w seven length	110
w seven none	-83
w seventy	28
w seventy none	22
w six length	-32
w six none	51
w sixteen	28
w sixteen length	-38
w sixteen none	63
w sixteen pack	21
w sixty length	34
w sixty none	40
w sixty percent	29
w sixty weight	61
w ten length	56
w ten none	-32
w ten pack	67
w ten percent	43
w ten time	-52
w ten weight	-31
w thirty	36
w thirty current	30
w thirty length	64
w thirty time	-21
w thirty weight	45
w three	29
w three length	68
w three pack	48
w three weight	34
w twelve	38
w twelve none	24
w twenty area	23
w twenty length	-27
w twenty percent	60
w twenty time	-45
w two count	99
w two pack	46
w two percent	20
w two weight	49
w x2	34
w x2 count	34
wall _. #	37
wall _. word	40
want _. .	-59
want _. word	56
wanted _. word	34
wants _. ,	20
wants _. word	39
was _. #	40
was _. ,	84
was _. one	-21
was _. word	41
we got _	-47
we have _	21
we set _	95
we're _. word	27
week 1	42
week 2	-32
week 5	42
weight figures 2	42
weight l 	-21
weight l a	-117
weight l at	40
weight l need	87
weight l weighs	-23
weight l. #	-21
weight l. 's	45
weight l. -ed	-24
weight l. one	35
weight l. unit	-72
weight l. word	92
weight parts	40
weight r 	26
weight r ,	26
weight r and	26
weight r bag	-25
weight r box	37
weight r of	42
weight r on	79
weight r. #	26
weight r. ,	26
weight r. -ing	-33
weight r. unit	33
weight said mixed	29
weight said whole	-22
weight words round	-24
were _. word	-25
what _. word	-54
which is _	57
wide by _	26
with _. -s	56
with _. one	-29
with _. word	45
within _. .	57
word \$ _	-58
word 's _	22
word ( _	53
word + _	21
word , _	37
word - _	-28
word -ed _	-34
word ._ 1	25
word ._ 12	29
word ._ 2	29
word ._ 3	-62
word ._ 4	47
word ._ :	-31
word ._ ;	-25
word ._ @	31
word ._ above	27
word ._ across	35
word ._ adds	-59
word ._ aff	42
word ._ are	32
word ._ at	-31
word ._ back	85
word ._ bit	41
word ._ block	-24
word ._ blocks	36
word ._ board	47
word ._ boards	43
word ._ brackets	56
word ._ brick	44
word ._ bubble	-55
word ._ bucks	-131
word ._ by	57
word ._ came	36
word ._ can	-27
word ._ centres	22
word ._ cents	-49
word ._ come	-38
word ._ corner	58
word ._ cut	-50
word ._ deep	48
word ._ do	53
word ._ dollars	-71
word ._ doors	67
word ._ eight	-25
word ._ extra	49
word ._ fifty	-44
word ._ flat	54
word ._ fourteen	-48
word ._ get	-29
word ._ gets	-27
word ._ goes	-36
word ._ going	44
word ._ good	51
word ._ got	-24
word ._ had	-56
word ._ hand	-75
word ._ hangers	35
word ._ has	-67
word ._ he	-31
word ._ here	37
word ._ high	47
word ._ hinge	44
word ._ hole	-68
word ._ i	50
word ._ i'll	37
word ._ i'm	-48
word ._ if	40
word ._ is	-59
word ._ ish	-44
word ._ larch	-27
word ._ last	-47
word ._ layers	47
word ._ long	44
word ._ mate	-23
word ._ more	85
word ._ nine	50
word ._ no	29
word ._ nothing	-30
word ._ now	-27
word ._ number	50
word ._ o'clock	-66
word ._ off	-23
word ._ old	52
word ._ on	26
word ._ out	-30
word ._ panel	-76
word ._ per	21
word ._ pipe	59
word ._ right	23
word ._ rough	39
word ._ round	-54
word ._ says	-20
word ._ second	-65
word ._ sharp	-31
word ._ she	-38
word ._ shelves	24
word ._ should	25
word ._ shy	25
word ._ six	-36
word ._ spare	49
word ._ studs	37
word ._ tall	25
word ._ that	-23
word ._ thirty	34
word ._ times	-103
word ._ today	-57
word ._ tomorrow	-40
word ._ top	58
word ._ turn	-75
word ._ under	21
word ._ up	35
word ._ used	28
word ._ wants	-42
word ._ was	-63
word ._ we	-21
word ._ wednesday	47
word ._ when	-23
word ._ which	39
word ._ white	30
word ._ wide	38
word ._ windows	21
word / _	-45
word 1 _	24
word Name _	-73
word _ 's	20
word _ 1	28
word _ :	-31
word _ ;	-25
word _ @	31
word _ letter	42
word _ n't	-59
word head 1	39
word head 2	23
word head 3	50
word letter _	-61
word one _	-29
word unit _	28
words # #	91
words # -s	-31
words # 1	57
words # one	61
words # word	-23
words 's one	-40
words 's unit	-23
words 's word	20
words , #	24
words , ,	20
words , -s	-21
words , .	32
words -ed #	-20
words -ed -s	44
words -ing #	52
words -ing -s	27
words -s one	-50
words -s word	36
words . -s	59
words . word	26
words l. -ed	26
words l. -ly	21
words l. .	66
words l. 1	36
words l. letter	-89
words l. one	-48
words letter #	-45
words letter unit	-38
words letter word	-44
words one #	-50
words one -s	31
words one one	-35
words r. #	-37
words r. -ing	-21
words r. /	51
words r. 1	87
words r. Name	-35
words r. n't	-46
words round # #	-44
words round # -s	-24
words round # one	-20
words round 's #	35
words round 's word	-36
words round , word	-36
words round -ed word	-33
words round -s word	30
words round l. #	-36
words round l. ,	-37
words round l. -	-33
words round l. -ed	-33
words round l. -s	44
words round l. word	21
words round one #	-47
words round one -s	29
words round one one	-23
words round one unit	44
words round one word	-25
words round r. #	37
words round r. 's	-25
words round r. ,	62
words round r. -s	-31
words round r. .	24
words round r. one	-68
words round unit word	-23
words round word #	36
words round word 's	-25
words round word ,	42
words round word letter	55
words round word one	-63
words round word unit	-37
words round word word	28
words unit #	-50
words unit .	41
words unit one	-27
words unit word	32
words word -ed	-49
words word .	-54
words word 1	43
words word n't	-39
words word unit	52
x _. #	63
x _. ,	39
x _. letter	21
x _. word	-21
yd 12	-59
year 1	-41
year 12	-81
year 60	-40
you at _	-44
your _. #	-48
zone _. word	-43
~ head none	29
£ head none	-80
`;
