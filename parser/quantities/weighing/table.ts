/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
" head none	35
# head 0	40
# head 1	54
$ head none	-108
's head 0	-35
's head none	113
( head none	23
+ head none	41
, head 0	27
, head 1	27
, head none	41
- head 0	-40
- head none	-61
-ed head none	54
-ing head 0	30
-ing head 2	-20
-ing head none	26
-ly head none	70
-s head 0	42
-s head 1	15
-s head none	47
. head 1	18
. head none	17
/ head 0	16
/ head none	-90
0 l 	-17
0 l at	23
0 l it's	-22
0 l. #	-17
0 l. word	28
0 r to	-21
0 r tonight	-44
0 r with	-16
0 r. -s	16
0 r. word	-38
0 words round	-31
1 figures 1	52
1 head 0	21
1 head none	-79
1 l +	30
1 l ,	63
1 l .	22
1 l :	-27
1 l add	27
1 l and	78
1 l another	-116
1 l at	35
1 l bars	30
1 l bath	-34
1 l be	18
1 l bedroom	-22
1 l big	-60
1 l birds	-15
1 l bottom	-53
1 l bought	56
1 l bring	67
1 l broke	33
1 l buy	50
1 l by	47
1 l check	-20
1 l crowned	28
1 l cut	-28
1 l day	-18
1 l each	-61
1 l every	-138
1 l falls	-20
1 l for	-24
1 l found	31
1 l fresh	-22
1 l from	-16
1 l get	97
1 l good	-19
1 l got	73
1 l grab	35
1 l had	46
1 l hall	55
1 l hand	32
1 l has	24
1 l have	51
1 l her	34
1 l hit	-29
1 l hooks	19
1 l i'm	24
1 l inch	65
1 l is	-27
1 l just	92
1 l last	-87
1 l left	-42
1 l leg	-23
1 l long	-75
1 l longer	-17
1 l lost	56
1 l me	40
1 l missing	-23
1 l mm	-26
1 l nd	-21
1 l need	59
1 l new	-108
1 l no	-53
1 l not	-32
1 l old	-78
1 l on	-54
1 l one	-34
1 l only	27
1 l order	29
1 l other	-114
1 l outlets	17
1 l outside	35
1 l plus	52
1 l put	75
1 l rated	21
1 l reading	18
1 l ready	-18
1 l red	39
1 l right	-32
1 l same	-18
1 l second	-27
1 l shave	42
1 l side	24
1 l so	46
1 l square	-26
1 l static's	23
1 l stuck	27
1 l take	-38
1 l th	-34
1 l that	-129
1 l that's	-16
1 l the	-172
1 l this	-44
1 l to	27
1 l type	-25
1 l up	33
1 l used	24
1 l want	56
1 l was	24
1 l which	-19
1 l white	-32
1 l wrong	-31
1 l. 's	-19
1 l. +	30
1 l. ,	63
1 l. -ed	-19
1 l. -s	-61
1 l. .	22
1 l. :	-27
1 l. letter	-20
1 l. one	-48
1 l. word	-37
1 parts	35
1 r 	22
1 r )	-23
1 r ,	-17
1 r .	-41
1 r at	-61
1 r back	-28
1 r before	-23
1 r blade	19
1 r bracket	24
1 r by	36
1 r closer	16
1 r cracked	27
1 r door	43
1 r double	15
1 r down	-21
1 r elbow	15
1 r end	-68
1 r exit	20
1 r for	32
1 r gasket	16
1 r hand	-37
1 r has	-21
1 r head	24
1 r here	56
1 r hit	-25
1 r hole	-41
1 r i	-30
1 r inside	35
1 r it's	-34
1 r kitchen	18
1 r leg	-29
1 r location	51
1 r max	16
1 r more	-24
1 r new	44
1 r obscure	15
1 r of	-289
1 r off	47
1 r on	33
1 r panel	-63
1 r rail	19
1 r reads	-22
1 r ring	42
1 r shelf	-54
1 r short	-27
1 r shot	-18
1 r side	-56
1 r sink	46
1 r so	-78
1 r spare	56
1 r sprinkler	37
1 r switch	19
1 r that	-42
1 r the	22
1 r thing	-31
1 r three	26
1 r time	-36
1 r to	-69
1 r toilet	16
1 r tonight	28
1 r two	39
1 r up	46
1 r wants	-19
1 r was	-49
1 r wednesday	27
1 r. #	22
1 r. 's	-16
1 r. )	-23
1 r. ,	-17
1 r. -ed	-29
1 r. -s	-84
1 r. .	-41
1 r. 1	64
1 r. one	76
1 r. word	-49
1 words	-64
12 figures 1	-25
12 l 	45
12 l 
	-33
12 l "	22
12 l .	18
12 l :	43
12 l about	43
12 l after	-54
12 l alarm's	-17
12 l all	71
12 l and	20
12 l another	37
12 l apartment	-28
12 l are	24
12 l around	-39
12 l at	-122
12 l b	-26
12 l back	-16
12 l backfill	59
12 l bay	-27
12 l been	35
12 l before	-57
12 l between	-24
12 l bottom's	15
12 l bout	34
12 l breaker	-32
12 l brought	34
12 l builder	-18
12 l building	-26
12 l but	39
12 l by	22
12 l can	27
12 l case	21
12 l cat	-30
12 l channel	-26
12 l circuit	-82
12 l code's	-18
12 l count	24
12 l cut	43
12 l door	-19
12 l double	-19
12 l down	-18
12 l drops	16
12 l e	-20
12 l edge	21
12 l eleven	-15
12 l embed	44
12 l end's	-34
12 l every	59
12 l exit	-22
12 l expires	-51
12 l exposure's	59
12 l fault	-17
12 l fell	54
12 l flat	-49
12 l floor	-47
12 l four	-27
12 l front	-33
12 l garage	64
12 l get	28
12 l gone	-24
12 l got	82
12 l had	-35
12 l has	46
12 l hit	-18
12 l hole	-61
12 l house	-55
12 l hung	44
12 l hwy	-22
12 l i've	32
12 l in	18
12 l is	30
12 l it	57
12 l it's	-93
12 l items	-20
12 l key	-37
12 l keynote	-16
12 l laborer	60
12 l lap	59
12 l last	19
12 l least	64
12 l leaves	52
12 l left	50
12 l like	-27
12 l line	-39
12 l lintel	20
12 l lost	-28
12 l lot	-54
12 l m	-15
12 l make	56
12 l meant	18
12 l need	49
12 l needs	25
12 l nine	-27
12 l no	26
12 l not	44
12 l note	-25
12 l number	-101
12 l number's	-20
12 l ocean's	-29
12 l of	16
12 l offered	-25
12 l oh	-16
12 l on	-23
12 l or	-26
12 l order	-34
12 l ought	-16
12 l out	23
12 l outta	-18
12 l over	-28
12 l overhang's	23
12 l owns	-23
12 l past	-56
12 l patch	-31
12 l port	-16
12 l poured	18
12 l pulling	18
12 l quarter	42
12 l ran	42
12 l reading	-64
12 l replaced	24
12 l reveal's	20
12 l right	-38
12 l riser	-52
12 l rm	-28
12 l room	-27
12 l run	38
12 l said	-56
12 l saves	-24
12 l says	34
12 l sent	17
12 l set	-54
12 l sheet	-24
12 l so	35
12 l solid	-30
12 l stack	18
12 l starter	24
12 l station	-20
12 l step	-16
12 l stone	16
12 l subcool	35
12 l superheat's	17
12 l take	28
12 l takes	30
12 l than	46
12 l the	59
12 l then	-21
12 l there's	22
12 l throat's	57
12 l through	-30
12 l til	-51
12 l took	19
12 l tread	-37
12 l truck	-37
12 l twelve	23
12 l unit	-73
12 l up	65
12 l us	47
12 l used	18
12 l vigas	16
12 l wants	-29
12 l we're	55
12 l with	-27
12 l x	30
12 l y	18
12 l zone	-27
12 l ×	28
12 l. "	22
12 l. #	45
12 l. 's	38
12 l. -ed	76
12 l. -ing	-31
12 l. -s	35
12 l. .	18
12 l. /	-33
12 l. :	43
12 l. Name	-39
12 l. one	-41
12 l. unit	-24
12 l. word	-25
12 parts	36
12 r )	-32
12 r ,	25
12 r .	30
12 r :	-39
12 r @	18
12 r a	33
12 r above	17
12 r adds	-24
12 r am	-30
12 r and	-18
12 r as	-35
12 r b	-38
12 r baby	17
12 r bar	39
12 r blown	19
12 r boards	33
12 r brg	20
12 r bucks	-20
12 r by	47
12 r cells	28
12 r closed	61
12 r coming	30
12 r counting	31
12 r creams	-18
12 r crows	-32
12 r dead	36
12 r deep	39
12 r den	32
12 r dentists	-45
12 r don't	25
12 r done	32
12 r door	-46
12 r doors	51
12 r down	17
12 r downs	27
12 r drops	23
12 r each	68
12 r en	18
12 r end	15
12 r fifty	-24
12 r fire	-16
12 r five	-50
12 r for	18
12 r gets	-27
12 r got	-25
12 r grille	-37
12 r has	-30
12 r heads	25
12 r here	38
12 r high	36
12 r hits	23
12 r hole	-69
12 r homeruns	27
12 r house	-19
12 r in	-37
12 r instead	25
12 r iron	-35
12 r is	-38
12 r it	-25
12 r last	-26
12 r laundromats	-23
12 r left	51
12 r legs	-39
12 r lights	15
12 r like	36
12 r long	22
12 r love	-29
12 r maple	-25
12 r members	-18
12 r men	-30
12 r miles	39
12 r more	50
12 r needs	-60
12 r no	-23
12 r now	36
12 r o'clock	-33
12 r of	54
12 r oh	16
12 r on	43
12 r out	-97
12 r over	20
12 r panel	-41
12 r people	-18
12 r rattle	20
12 r roof	-26
12 r running	20
12 r sales	-22
12 r says	-25
12 r screws	-18
12 r seeds	-32
12 r sharp	-40
12 r shift	-40
12 r short	81
12 r should	23
12 r shows	-20
12 r six	-43
12 r so	19
12 r something	-40
12 r stops	-23
12 r the	22
12 r they	-20
12 r this	-17
12 r through	-20
12 r till	-25
12 r times	-24
12 r tip	-15
12 r to	33
12 r toward	27
12 r two	-82
12 r valve	-18
12 r voicemails	-19
12 r wants	-18
12 r was	-21
12 r waste	25
12 r ways	-23
12 r were	-15
12 r work	55
12 r x	20
12 r. )	-32
12 r. ,	25
12 r. -ed	23
12 r. .	30
12 r. :	-39
12 r. @	18
12 r. Name	-26
12 r. n't	23
12 r. one	-124
12 r. unit	73
12 words	24
12 words round	-20
2 l 	29
2 l 
	-21
2 l (	23
2 l -	-19
2 l .	18
2 l 14	17
2 l 204	18
2 l a	-24
2 l adds	36
2 l another	21
2 l around	-28
2 l at	-85
2 l back	22
2 l bath	-54
2 l bay	-61
2 l beam	34
2 l bed	-29
2 l bedroom	-79
2 l bought	24
2 l breaker	-16
2 l bring	17
2 l building	-20
2 l buy	31
2 l by	24
2 l charging	-35
2 l cinco	20
2 l coat	-16
2 l corta	39
2 l count	-39
2 l cover's	47
2 l day	-51
2 l dirt	25
2 l double	-35
2 l drawer	-45
2 l eyes	-37
2 l fall's	25
2 l flashes	-30
2 l flat	-30
2 l forward	50
2 l found	17
2 l fourteen	-29
2 l gets	57
2 l got	18
2 l grab	25
2 l grade's	24
2 l hall	31
2 l hibs	-21
2 l in	-24
2 l it	30
2 l jumper	-35
2 l just	21
2 l kept	21
2 l landing	30
2 l last	78
2 l leg	-47
2 l level	-20
2 l low	16
2 l makes	-18
2 l maybe	68
2 l minus	47
2 l missing	20
2 l need	37
2 l number	-68
2 l of	-38
2 l only	-22
2 l or	17
2 l order	-21
2 l other	51
2 l out	-25
2 l over	-16
2 l p	-15
2 l panel	-42
2 l past	-27
2 l plan	-25
2 l quarter	36
2 l rack	-26
2 l ran	35
2 l sags	17
2 l see	35
2 l six	21
2 l slope's	31
2 l strike	-22
2 l swap	30
2 l take	17
2 l takes	-48
2 l the	84
2 l then	-30
2 l there's	-67
2 l thing	-52
2 l took	35
2 l twelve	-46
2 l two	21
2 l type	-22
2 l up	20
2 l want	20
2 l wants	51
2 l was	29
2 l we're	16
2 l with	22
2 l zone	-45
2 l. #	29
2 l. 's	36
2 l. (	23
2 l. -	-19
2 l. -ed	34
2 l. .	18
2 l. /	-21
2 l. 1	31
2 l. unit	-76
2 parts	44
2 r 	-24
2 r -	-22
2 r 3	-23
2 r :	-32
2 r advil	-19
2 r after	-31
2 r against	25
2 r anchors	18
2 r are	25
2 r at	91
2 r bad	17
2 r bars	-18
2 r behind	17
2 r birds	-27
2 r blinds	34
2 r broken	-18
2 r came	34
2 r can	-21
2 r cement	-19
2 r connections	-15
2 r don't	37
2 r doors	40
2 r double	22
2 r end	22
2 r extra	27
2 r extras	47
2 r faced	-17
2 r fall	38
2 r fifty	16
2 r gang	-84
2 r guys	-44
2 r had	-23
2 r hall	31
2 r has	-18
2 r helpers	-25
2 r high	24
2 r hinges	20
2 r homeruns	-34
2 r hundreds	-16
2 r i	26
2 r if	34
2 r in	35
2 r is	-34
2 r keys	-27
2 r kinds	-27
2 r last	39
2 r layer	-53
2 r lights	-31
2 r man	-25
2 r more	64
2 r need	17
2 r new	30
2 r niches	19
2 r nil	-22
2 r o'clock	-39
2 r of	101
2 r off	18
2 r one	-46
2 r or	39
2 r out	40
2 r panel	-47
2 r part	-60
2 r points	17
2 r pole	-36
2 r proud	26
2 r pulled	34
2 r put	-21
2 r says	-15
2 r screws	16
2 r shakes	-18
2 r sides	-22
2 r slope	18
2 r so	37
2 r speeds	-17
2 r spots	-29
2 r stage	-30
2 r stars	-25
2 r steps	-46
2 r strikes	-18
2 r studs	22
2 r sugars	-21
2 r switches	19
2 r the	-34
2 r then	-31
2 r there	29
2 r thirty	20
2 r three	-17
2 r times	-20
2 r to	49
2 r together	-31
2 r tomorrow	-17
2 r triplex	-23
2 r twenty	18
2 r under	16
2 r usb	21
2 r way	-16
2 r ways	-23
2 r were	49
2 r where	20
2 r window	-38
2 r windows	34
2 r wrongs	-41
2 r x	-26
2 r. #	-24
2 r. 's	-16
2 r. -	-22
2 r. 1	21
2 r. :	-32
2 r. n't	25
2 r. one	58
20 l ,	42
20 l -	-35
20 l .	-22
20 l 3	-19
20 l a	67
20 l all	31
20 l and	34
20 l at	50
20 l be	30
20 l bogeyed	-25
20 l by	32
20 l ch	-24
20 l code	-25
20 l cut	18
20 l delta's	44
20 l dowels	16
20 l drew	-34
20 l error	-27
20 l every	63
20 l flat	24
20 l for	-42
20 l front	70
20 l gap's	-31
20 l go	26
20 l got	35
20 l head	18
20 l hearth's	31
20 l house	-33
20 l in	-57
20 l is	45
20 l item	-20
20 l lad's	-26
20 l lot	-56
20 l maybe	16
20 l me	-29
20 l minus	-16
20 l need	27
20 l number	-26
20 l of	-16
20 l on	-27
20 l packers	-20
20 l pier	-38
20 l plan	36
20 l plot	-20
20 l r	-93
20 l rad	18
20 l read	25
20 l reading	19
20 l said	28
20 l says	21
20 l seat's	-36
20 l send	27
20 l set	39
20 l sheet	-15
20 l so	25
20 l span's	21
20 l sweet	-18
20 l tag	-22
20 l than	-45
20 l that's	-16
20 l the	-49
20 l then	55
20 l to	-48
20 l today	20
20 l turned	-18
20 l turning	-22
20 l two	17
20 l under	32
20 l unit	-21
20 l used	22
20 l wants	-24
20 l was	-32
20 l x	19
20 l your	-52
20 l. 's	15
20 l. ,	42
20 l. -	-35
20 l. -ing	20
20 l. -s	15
20 l. .	-22
20 l. 1	-22
20 l. Name	-23
20 l. letter	-76
20 l. one	17
20 l. unit	47
20 l. word	22
20 parts	21
20 r 	21
20 r 
	-43
20 r -	-26
20 r .	26
20 r :	-16
20 r after	55
20 r at	21
20 r banksia	-19
20 r batts	-44
20 r before	28
20 r boards	16
20 r bucks	-52
20 r by	30
20 r c	-36
20 r centers	18
20 r doors	19
20 r down	-87
20 r each	19
20 r even	22
20 r first	-18
20 r five	-33
20 r for	-19
20 r going	-31
20 r had	15
20 r heads	23
20 r hot	-21
20 r hung	17
20 r in	16
20 r last	-16
20 r more	23
20 r ninety	-62
20 r ninth	-25
20 r no	31
20 r oc	24
20 r of	44
20 r off	-44
20 r on	22
20 r one	56
20 r out	30
20 r outta	22
20 r second	-29
20 r since	-33
20 r smokes	-24
20 r so	25
20 r then	-32
20 r times	-23
20 r toilets	38
20 r twelve	-21
20 r twenty	-22
20 r two	-20
20 r wafers	18
20 r with	22
20 r. #	21
20 r. -	-26
20 r. -s	40
20 r. .	26
20 r. /	-43
20 r. :	-16
20 r. Name	-17
20 r. one	-114
20 r. unit	19
20 r. word	37
20 words	19
20 words round	-34
5 l 	41
5 l 
	-49
5 l ,	33
5 l :	26
5 l a	-53
5 l about	-39
5 l add	26
5 l after	-39
5 l and	-33
5 l another	39
5 l apt	-25
5 l at	-68
5 l b	-16
5 l back	24
5 l bay	-36
5 l be	21
5 l bed	-28
5 l bedroom	-31
5 l bldg	-36
5 l boring	-27
5 l bring	33
5 l brought	47
5 l by	-50
5 l class	-43
5 l code	-44
5 l cover's	18
5 l day	-54
5 l deck	-20
5 l den	17
5 l dock	-19
5 l done	26
5 l door	-70
5 l down	45
5 l edge	18
5 l elevator	-16
5 l feeder	-19
5 l finished	-28
5 l five	-22
5 l flashes	-52
5 l flat	-38
5 l foot	23
5 l for	51
5 l front	22
5 l full	36
5 l g	-18
5 l get	44
5 l gimme	86
5 l got	28
5 l grab	17
5 l grabbed	18
5 l had	18
5 l has	31
5 l have	26
5 l he's	-17
5 l heater	-15
5 l hole's	19
5 l hour's	-45
5 l house	-17
5 l hub	24
5 l in	31
5 l island	16
5 l it	67
5 l kitchen	31
5 l knock	24
5 l ladder	-21
5 l leaves	41
5 l left	46
5 l level	-57
5 l line	-52
5 l loop	-51
5 l lp	-30
5 l lvl	-39
5 l make	15
5 l man's	-37
5 l maybe	41
5 l miters	16
5 l mode	-39
5 l mold	15
5 l necesito	47
5 l need	43
5 l not	63
5 l note	-27
5 l nozzle	-42
5 l number	-72
5 l of	-20
5 l on	56
5 l one	-22
5 l only	76
5 l other	66
5 l out	48
5 l over	99
5 l p	-36
5 l pan's	17
5 l part	-31
5 l plant	17
5 l profile's	20
5 l pull	16
5 l pulled	24
5 l pump	-18
5 l r	23
5 l ratio's	48
5 l rolled	-39
5 l room	-61
5 l said	36
5 l says	20
5 l scaff	34
5 l set	25
5 l sheet	-20
5 l shelf	-39
5 l short	64
5 l shot	-23
5 l sister	29
5 l slide	-42
5 l sobran	18
5 l stage	-20
5 l still	49
5 l strike	-21
5 l switch	-35
5 l take	24
5 l that	30
5 l the	-22
5 l then	-33
5 l there's	18
5 l those	-22
5 l throw	21
5 l till	-24
5 l took	24
5 l top	-20
5 l tread	-20
5 l truck	-16
5 l two	-27
5 l type	-21
5 l under	24
5 l unit	-49
5 l up	19
5 l us	34
5 l use	18
5 l used	20
5 l ver	-17
5 l wall	19
5 l wants	31
5 l was	56
5 l x	18
5 l zone	-81
5 l. #	35
5 l. ,	33
5 l. -ed	25
5 l. -s	89
5 l. /	-59
5 l. :	26
5 l. Name	-39
5 l. one	-80
5 l. unit	-61
5 parts	23
5 r )	-46
5 r -	-48
5 r 2	21
5 r 3	-33
5 r 7	-26
5 r :	-21
5 r a	-27
5 r against	18
5 r along	20
5 r apart	66
5 r apiece	34
5 r arborvitae	17
5 r are	15
5 r at	18
5 r back	45
5 r baths	25
5 r batts	-59
5 r bays	-41
5 r blade	-59
5 r boards	17
5 r brass	20
5 r bricks	-17
5 r broken	20
5 r burner	-51
5 r business	-18
5 r but	38
5 r by	-37
5 r cabin	-20
5 r calls	-23
5 r closets	18
5 r corner	21
5 r corridor	-16
5 r cracked	15
5 r dimmers	25
5 r doors	-46
5 r dutchmen	21
5 r extra	48
5 r for	59
5 r forty	28
5 r four	-49
5 r gaskets	16
5 r gets	-17
5 r gone	-42
5 r guys	-27
5 r had	-16
5 r hall	17
5 r has	-26
5 r heads	22
5 r high	53
5 r hole	-24
5 r hooks	22
5 r i'm	-28
5 r if	30
5 r in	66
5 r is	-65
5 r just	61
5 r kids	-15
5 r layers	24
5 r leaks	16
5 r left	56
5 r lift	-34
5 r living	16
5 r loose	24
5 r masons	-15
5 r more	64
5 r nail	22
5 r new	-18
5 r number	25
5 r o'clock	-74
5 r oclock	-36
5 r of	84
5 r off	25
5 r outlets	20
5 r outside	16
5 r over	18
5 r parts	54
5 r per	61
5 r phase	-42
5 r quarter	-93
5 r ready	-17
5 r receps	18
5 r refused	-27
5 r ring	-21
5 r riser	-16
5 r says	-27
5 r sconces	22
5 r screens	47
5 r sections	25
5 r shingles	-19
5 r short	-27
5 r should	23
5 r spaces	39
5 r square	-57
5 r stars	-25
5 r still	71
5 r strikes	-39
5 r ten	25
5 r the	-84
5 r then	-17
5 r they	29
5 r thick	32
5 r times	-81
5 r to	19
5 r today	-31
5 r tomorrow	-37
5 r tries	66
5 r tripped	-19
5 r twelve	34
5 r two	20
5 r under	-15
5 r unopened	26
5 r walls	22
5 r was	-17
5 r way	-78
5 r went	25
5 r will	36
5 r windows	19
5 r with	-41
5 r x	39
5 r zerks	17
5 r. )	-46
5 r. -	-48
5 r. -ing	37
5 r. -s	38
5 r. :	-21
5 r. n't	-33
5 r. one	-51
60 0figures 3	-15
60 figures 2	22
60 l 	-20
60 l $	-36
60 l ,	-19
60 l -	-61
60 l a	31
60 l about	-23
60 l all	17
60 l around	45
60 l at	64
60 l be	25
60 l bin	-37
60 l breaker	-41
60 l bus	-22
60 l by	35
60 l cold's	37
60 l diferencia	28
60 l do	-25
60 l door	29
60 l down	-16
60 l dynamic	20
60 l error	-25
60 l every	56
60 l exit	-16
60 l go	25
60 l grade	-20
60 l had	-48
60 l he's	-92
60 l height's	19
60 l hoops	22
60 l house	77
60 l im	-24
60 l in	-20
60 l is	56
60 l it	-36
60 l la	-18
60 l left	-40
60 l limit's	-36
60 l lot	-52
60 l maybe	-16
60 l measure	-38
60 l need	29
60 l net	-45
60 l not	52
60 l number	-60
60 l of	27
60 l off	-26
60 l ones	44
60 l ordered	16
60 l out	22
60 l plate	27
60 l po	-16
60 l r	-35
60 l rated	17
60 l reading	19
60 l rule	-22
60 l say	23
60 l sch	-53
60 l sent	15
60 l ser	23
60 l serving	-27
60 l set	46
60 l shift	16
60 l sixty	-18
60 l studio	-25
60 l talks	-35
60 l that's	20
60 l there	18
60 l through	28
60 l title	-18
60 l to	37
60 l top	-17
60 l turned	-20
60 l unit	-32
60 l up	-62
60 l vanity	19
60 l vikings	-25
60 l was	26
60 l with	34
60 l x	24
60 l. #	-20
60 l. $	-36
60 l. 's	46
60 l. ,	-19
60 l. -	-61
60 l. -ing	25
60 l. -ly	19
60 l. letter	-16
60 l. one	-30
60 l. unit	41
60 l. word	27
60 r 
	16
60 r .	27
60 r 2	21
60 r 50	-29
60 r :	-22
60 r @	22
60 r a	32
60 r across	18
60 r afternoon	16
60 r again	-22
60 r all	19
60 r an	-33
60 r at	39
60 r bar	-20
60 r batts	-20
60 r blades	26
60 r block	29
60 r board	29
60 r boards	15
60 r both	26
60 r bucks	-38
60 r chance	-19
60 r down	76
60 r fifty	-45
60 r flat	18
60 r for	-23
60 r forms	-18
60 r forty	-32
60 r front	46
60 r going	-60
60 r high	24
60 r in	-18
60 r is	-64
60 r miles	-17
60 r modules	23
60 r no	-22
60 r nothing	-34
60 r now	-28
60 r oc	26
60 r of	49
60 r off	-34
60 r on	-77
60 r out	19
60 r packers	-25
60 r quid	-16
60 r right	-35
60 r second	-34
60 r seven	-22
60 r seventeen	-15
60 r should	26
60 r so	41
60 r space	18
60 r square	34
60 r then	29
60 r there	-36
60 r thick	20
60 r three	30
60 r up	20
60 r voices	-31
60 r wide	15
60 r x	26
60 r. -ing	-21
60 r. -s	-15
60 r. .	27
60 r. 1	-22
60 r. :	-22
60 r. @	22
60 r. letter	30
60 r. one	-101
60 r. word	48
60 words	24
99 figures 2	35
99 l 	-23
99 l $	-42
99 l ,	24
99 l -	18
99 l about	18
99 l an	-54
99 l are	-31
99 l around	50
99 l at	48
99 l by	17
99 l got	-30
99 l has	15
99 l headroom's	29
99 l height	42
99 l him	26
99 l humidity's	32
99 l i'm	-17
99 l in	-22
99 l it	-26
99 l job	-27
99 l kerbs	28
99 l not	-41
99 l of	-30
99 l on	-20
99 l over	-24
99 l past	43
99 l psalm	-22
99 l roughly	34
99 l says	-39
99 l she's	-55
99 l sixteen	-19
99 l sleeper's	23
99 l static	43
99 l temp	18
99 l that	-30
99 l the	-32
99 l to	41
99 l under	44
99 l vs	19
99 l was	28
99 l we're	-31
99 l with	-26
99 l. #	-23
99 l. $	-42
99 l. 's	17
99 l. ,	24
99 l. -	18
99 l. -ing	37
99 l. -ly	44
99 l. one	-68
99 l. unit	-24
99 l. word	31
99 parts	-30
99 r ,	46
99 r -	20
99 r .	19
99 r a	-23
99 r and	-31
99 r billed	-20
99 r bucks	-36
99 r camry	-15
99 r dynamic	20
99 r flowing	20
99 r he	-16
99 r is	-36
99 r lower	18
99 r needs	15
99 r next	-25
99 r no	28
99 r off	21
99 r out	33
99 r panhead	-26
99 r problems	-22
99 r rough	26
99 r so	47
99 r we're	-52
99 r when	17
99 r with	23
99 r. ,	46
99 r. -	20
99 r. -ed	-15
99 r. -ing	20
99 r. -s	-34
99 r. .	19
99 r. one	-29
99 r. unit	-17
999 0figures 4	-67
999 l 	-32
999 l $	-28
999 l about	55
999 l amp	30
999 l and	61
999 l are	21
999 l around	-28
999 l at	36
999 l deep	17
999 l door	-44
999 l down	-30
999 l drawing	-21
999 l eta	-23
999 l every	42
999 l exit	-18
999 l extension	-17
999 l extension's	-34
999 l f	-24
999 l first	-46
999 l for	17
999 l frame	-16
999 l go	-26
999 l going	41
999 l good	-18
999 l had	-23
999 l in	-56
999 l invert's	31
999 l invoice	-17
999 l it	-25
999 l it's	41
999 l kept	17
999 l kid's	-31
999 l knocked	-26
999 l laid	32
999 l latillas	19
999 l leg	49
999 l like	28
999 l limit's	55
999 l neutral's	23
999 l nobody's	-58
999 l not	-26
999 l now	20
999 l number's	-55
999 l of	-43
999 l off	17
999 l on	29
999 l one	16
999 l out	44
999 l population's	-16
999 l pressure's	-39
999 l pri	22
999 l put	-18
999 l reading	36
999 l reads	20
999 l recirc	49
999 l rise	55
999 l riser	32
999 l rm	-52
999 l room	-37
999 l section	-36
999 l shows	23
999 l since	-19
999 l spacing	16
999 l step's	17
999 l suite	-48
999 l the	-74
999 l then	-16
999 l there	-41
999 l there's	17
999 l those	16
999 l to	42
999 l two	35
999 l two's	24
999 l up	-19
999 l voltage	67
999 l volts	17
999 l wall's	24
999 l wants	17
999 l was	-48
999 l with	42
999 l x	-15
999 l. #	-32
999 l. $	-28
999 l. 's	47
999 l. -ed	-45
999 l. -ing	66
999 l. -s	83
999 l. 1	-36
999 l. one	24
999 l. unit	-22
999 oh	-59
999 parts	15
999 r 
	20
999 r ,	36
999 r -	-57
999 r .	28
999 r 555	-25
999 r a	-52
999 r above	26
999 r already	-38
999 r an	-17
999 r and	44
999 r area	-36
999 r base	29
999 r before	-16
999 r black	-46
999 r block	-44
999 r brick	22
999 r bucks	-43
999 r building	-17
999 r by	32
999 r came	-24
999 r centres	42
999 r common	47
999 r covered	-17
999 r deep	20
999 r dollars	-27
999 r double	-26
999 r down	43
999 r end	23
999 r every	-27
999 r for	-51
999 r give	46
999 r going	70
999 r gray	-15
999 r he'll	-21
999 r hinge	-22
999 r i	28
999 r is	-20
999 r juniper	-16
999 r leg	17
999 r limiter	32
999 r long	31
999 r mas	19
999 r net	-44
999 r not	25
999 r number	-21
999 r of	66
999 r one	37
999 r over	-54
999 r port	-31
999 r return's	23
999 r riser	17
999 r sec	22
999 r she	-18
999 r side	39
999 r the	23
999 r three	-19
999 r today	22
999 r two	-49
999 r when	-18
999 r wide	26
999 r wire	-28
999 r x	20
999 r. 's	44
999 r. ,	36
999 r. -	-57
999 r. -ing	-17
999 r. -s	-28
999 r. .	28
999 r. /	20
999 r. 1	-56
999 r. Name	-28
999 r. letter	47
999 r. one	-35
999 r. unit	-24
999 r. word	24
999 swallowed round	-18
999 words	68
999 words round	58
9999 figures 4	-42
9999 l ,	-16
9999 l asking	-22
9999 l at	106
9999 l bath's	19
9999 l by	-19
9999 l ceiling's	17
9999 l deductible's	-40
9999 l from	-42
9999 l had	45
9999 l hundred	-28
9999 l in	-15
9999 l invoice	-22
9999 l is	-40
9999 l job's	-29
9999 l lintel's	26
9999 l sheets	34
9999 l switch	-23
9999 l the	-27
9999 l want	-41
9999 l was	53
9999 l x	29
9999 l. 's	21
9999 l. ,	-16
9999 l. -ing	-31
9999 l. -s	25
9999 l. letter	29
9999 l. one	-28
9999 l. word	-31
9999 parts	-16
9999 r 	-23
9999 r .	-22
9999 r already	-24
9999 r dia	23
9999 r for	-19
9999 r hi	34
9999 r in	-44
9999 r it'll	-30
9999 r juniper	-18
9999 r long	29
9999 r maple	-25
9999 r off	26
9999 r on	15
9999 r side	-17
9999 r so	16
9999 r stocks	48
9999 r to	26
9999 r today	-20
9999 r wide	54
9999 r. #	-24
9999 r. -s	42
9999 r. .	-22
9999 r. /	26
9999 r. unit	-31
9999 r. word	-16
9999 words	-16
9999 words round	45
: head 0	30
: head 1	34
: head none	26
@ head none	30
Name head none	-103
a a	-43
a aa	17
a about	-57
a above	32
a ac	-32
a accepted	-20
a across	27
a act	-31
a acts	-35
a adds	-29
a adjustable	39
a advil	-19
a ae	33
a after	-15
a afternoon	16
a again	-46
a against	38
a ain't	49
a alarm	-15
a alder	-24
a all	-58
a along	29
a also	31
a am	-37
a an	-88
a anchors	29
a and	47
a angle	23
a anodes	30
a another	-29
a anything	29
a apart	85
a apiece	29
a arborvitae	17
a are	34
a argue	-23
a arms	-22
a around	-26
a as	-26
a ask	-49
a away	-30
a b	-48
a back	32
a backing	-16
a backs	-28
a backset's	23
a bad	27
a bags	16
a bales	-56
a ballasts	27
a balusters	-27
a banksia	-33
a bar	29
a basket	-45
a bath	53
a bathroom	-39
a baths	32
a batts	-78
a bay	-20
a be	41
a beam	15
a bears	-21
a bedding	28
a bedroom	-42
a before	19
a below	16
a bench	27
a bent	28
a bifolds	26
a big	17
a bigger	-22
a birch	-38
a birds	-27
a bit	19
a bits	-29
a black	16
a blade	-21
a blades	27
a blanks	35
a blew	-24
a blind	34
a blinds	22
a block	-24
a blocks	65
a blown	-20
a blue	-32
a boards	75
a bolt	28
a bolts	15
a books	-42
a boots	-34
a bottom	52
a bought	52
a boxes	35
a braille	31
a branch	-28
a brass	66
a break	-18
a brg	20
a brick	-16
a bridge	-56
a bring	28
a broken	22
a bronze	46
a brought	26
a bucket	30
a bucks	-64
a bulbs	24
a bullnose	-20
a burned	28
a burner	-51
a bushing	28
a business	-31
a bust	-23
a but	42
a buzz	18
a buzzer	-31
a bye	-28
a c	-59
a cabin	-20
a cabinet	-35
a cabinets	-23
a cable	-56
a call	-51
a called	-17
a calling	-30
a calls	-22
a came	19
a camry	-15
a can	41
a can't	-40
a cans	40
a cant	-62
a caps	21
a car	-17
a carpet	-18
a carry	-42
a cart	53
a cartridge	-23
a case	36
a cash	-31
a casing	15
a cat6	19
a caulk	26
a cb	-24
a cedar	-19
a cells	30
a center	61
a centers	48
a centimeter	21
a centre	25
a centres	15
a chance	-23
a change	-52
a changed	-21
a channel	-25
a check	54
a chimney	29
a chipped	95
a chippy	-53
a choked	16
a circuit	17
a circus	-23
a clear	98
a cleared	-23
a client	-26
a clips	59
a clock	-24
a closed	47
a closet	32
a code	43
a coffee	-18
a color	-33
a coming	65
a common	40
a complete	-35
a conc	28
a concrete	-55
a connections	-15
a cord	-30
a corner	38
a could	-17
a count	66
a counting	41
a country	-50
a court	-16
a cousin	23
a covered	-17
a crack	-45
a cracked	64
a creams	-18
a crew	-91
a crows	-32
a cu	28
a cupped	-16
a cut	27
a cuts	18
a damaged	26
a damper	17
a dampers	25
a day	-81
a de	72
a deck	-18
a decking	-17
a decks	46
a dee	27
a deep	93
a deg	22
a degrees	-21
a dehu	29
a den	19
a dentists	-95
a deny	-26
a desk	31
a dia	38
a did	21
a dining	-44
a dirt	18
a discharge	-30
a disposal	-40
a dlvd	48
a do	35
a doce	67
a dock	-27
a doesn't	-32
a dog	-16
a dollar	-76
a dollars	-49
a don't	-28
a dont	-21
a dos	41
a dot	-51
a doubles	20
a down	-36
a downs	29
a dozen	-121
a drawer	-30
a drawing	42
a draws	18
a drew	-37
a drip	19
a driving	-33
a drops	23
a dry	24
a dump	42
a dutchmen	21
a dynamic	20
a each	102
a easter	-33
a ed	-17
a edge	59
a eggshell	22
a egress	23
a eights	21
a eighty	-21
a either	-23
a el	-16
a elbows	37
a eleven	-29
a eleventh	-49
a elm	-27
a else	-18
a elsewhere	17
a em	50
a emer	24
a empty	18
a ended	-37
a ending	-24
a ends	47
a enough	16
a euro	-94
a even	69
a every	49
a everybody	-41
a everything	-26
a everywhere	-30
a extender	-24
a extra	45
a extras	47
a f	-16
a faced	-17
a faces	-31
a factory	21
a fair	-23
a fall	25
a falls	-35
a fan	-17
a fan's	29
a far	72
a faucet	-19
a fault	-30
a feed	-31
a feet	-28
a few	19
a field	63
a figure	20
a filter	33
a finally	-19
a find	-35
a fine	41
a fingers	-28
a fire	-19
a firebrick	47
a fit	23
a five	-27
a fives	-18
a fix	-68
a fixed	-33
a flapper	-61
a flashed	-20
a flashing	31
a flicker	40
a floor	-22
a flowing	25
a flush	-18
a foam	-23
a fogged	34
a foot	50
a footer	32
a footers	48
a for	28
a form	35
a forms	-18
a forty	-29
a forward	-32
a four	-17
a fourteen	73
a framed	-35
a fridays	-28
a front	41
a frost	-23
a ft	-27
a furnace	-55
a g	23
a gal	-20
a gallon	-27
a gallons	15
a game	-30
a gang	-84
a garage	-15
a gasket	28
a gaskets	18
a gate	-48
a gauge	24
a gave	15
a gets	-30
a give	52
a glass	17
a glued	-15
a go	57
a goals	-24
a goat	-26
a goes	-41
a gone	-24
a good	63
a grade	29
a grate	-38
a greased	-22
a green	16
a grey	21
a grille	-96
a ground	-29
a grout	35
a guides	15
a guy	-66
a guys	-88
a haggles	-23
a hair	34
a half	-28
a hall	83
a hand	-34
a handle	-41
a hang	33
a hangers	87
a happy	16
a has	-88
a haul	-76
a have	23
a hdrm	18
a he	-67
a he'll	-20
a he's	-81
a head	-54
a heads	76
a heat	23
a heater	20
a heave	-34
a heavy	18
a height	22
a helpers	-25
a her	26
a here	27
a hi	36
a high	107
a him	-63
a hinges	-25
a hire	-26
a his	-24
a hit	-33
a hold	32
a holding	27
a holds	20
a hole	-60
a home	-23
a homeowner	-38
a hooks	19
a hour	-18
a hours	-22
a how	-19
a hr	-60
a hums	-50
a hundred	33
a hundreds	-25
a hung	-32
a hydro	-34
a i	-54
a id	-40
a idlers	55
a if	23
a in	17
a inch	21
a inches	18
a instead	21
a into	-25
a iron	-45
a is	-46
a ish	-21
a it	-26
a it'll	-50
a it's	-74
a job	22
a joint	35
a joist	42
a junction	21
a juniper	-33
a just	36
a kay	20
a keep	25
a key	-45
a key's	29
a kick	-15
a kid	-32
a kinds	-38
a kit	33
a kitchen	-37
a kits	-39
a knocked	-24
a l	29
a labeled	18
a ladder	-37
a lady	17
a laid	25
a lamp	31
a land	33
a landing	49
a laser	37
a last	36
a latch	25
a late	-71
a later	18
a latest	-42
a laundromats	-23
a laundry	17
a lavs	18
a lawsuit	-38
a lay	38
a layer	-72
a layout	19
a lb	30
a lead	22
a leave	46
a leaves	22
a left	50
a leg	55
a legs	45
a length	28
a lengths	32
a lid	41
a lift	-81
a light	28
a lights	-17
a like	-59
a lime	55
a limestone	18
a limiter	32
a line	-35
a linear	18
a links	29
a lite	-22
a litre	20
a living	22
a ln	-22
a load	-18
a loaded	-35
a location	51
a lol	-67
a long	100
a longer	23
a look	-39
a lot	-45
a love	-29
a low	16
a lower	41
a lugs	-26
a lunch	-41
a mailbox	-31
a main	-30
a make	-45
a man	-32
a manifold	19
a manual	-30
a maple	-58
a mark	15
a mas	19
a masons	-36
a match	18
a mate	-31
a matt	20
a max	57
a me	-39
a mean	-24
a measured	18
a medium	-55
a members	-18
a men	-36
a menos	19
a metal	-27
a meter	35
a metres	20
a middle	65
a midspan	17
a miles	23
a millimeter	-26
a minimum	25
a minute	-51
a minutes	-30
a mirror	22
a mm	21
a modules	40
a molding	-39
a monday	-26
a month	20
a more	83
a morning	-113
a mosaic	-26
a most	19
a move	19
a moved	-67
a moves	-29
a muppet	-16
a my	31
a n	80
a na	-27
a nail	-20
a nailing	39
a nails	35
a nap	20
a need	56
a needed	23
a needs	-44
a neighbors	-16
a net	-44
a never	-36
a next	-19
a nice	-16
a niches	19
a night	-63
a nil	-29
a nine	-25
a ninety	-23
a ninth	-25
a no	-19
a nobody's	-25
a noon	-68
a north	23
a nose	58
a not	-42
a nothing	-47
a nozzle	23
a nuts	18
a o'clock	-103
a oak	23
a obscure	15
a oc	50
a oclock	-40
a of	27
a office	-32
a offset	-19
a oh	-46
a old	54
a one's	23
a ones	16
a opened	16
a opener	-22
a opening	53
a opens	-25
a or	16
a order	72
a orilla	18
a ought	41
a ounce	25
a out	-32
a outlets	34
a over	28
a overhangs	-36
a pack	-23
a packers	-61
a paint	17
a paint's	-30
a painted	31
a pair	-20
a panel	-98
a panels	24
a panes	-17
a panhead	-26
a paper	-24
a park	-15
a part	-60
a parts	68
a past	-94
a patched	-20
a pattern	-75
a people	-17
a per	43
a percent	17
a permit	-39
a pex	22
a pick	-31
a picked	29
a piece	-25
a piers	24
a pies	69
a pile	-18
a pine	31
a pipe	19
a plan	41
a plank	-20
a plant	-23
a plaster	19
a plastic	-37
a plate	42
a plates	35
a platform	-18
a platforms	73
a play	-31
a please	22
a plenty	71
a plinth	35
a plug	-24
a plumbers	-26
a plus	-28
a plywood	28
a pm	-36
a pocket	28
a podium	-64
a point	-27
a points	32
a pole	-20
a pool	-51
a pop	-18
a pops	23
a port	-41
a powder	-28
a power	-31
a pressure	33
a primer	29
a privacy	43
a problem	-16
a problems	-22
a proud	27
a pull	17
a pulled	-19
a pulling	23
a pulls	37
a punch	-17
a punched	39
a purple	15
a quarry	28
a quart	47
a quid	-57
a quiet	-18
a quit	-46
a rack	18
a radiator	15
a radio	-109
a rafters	16
a rails	39
a rain	-15
a raining	-44
a raise	44
a ran	27
a rang	-18
a range	-84
a rattle	22
a reads	-31
a ready	-50
a rear	-24
a receps	20
a receptacle	22
a receptacles	24
a recirc	29
a red	44
a reducer	20
a reducers	39
a refused	-27
a remote	-15
a replaced	-29
a required	-28
a reset	-52
a rest	29
a return's	29
a reveal	22
a rhythm	-66
a ridge	22
a ring	26
a rise	28
a road	25
a roller	20
a roof	-23
a ropings	-26
a round	17
a rub	41
a rubber	29
a run	-27
a running	27
a runs	-26
a safe	46
a safety	-42
a said	-59
a saints	-44
a sales	-22
a sand	35
a sanded	-27
a saturday	-18
a sausages	16
a saying	-22
a school	-16
a sconces	21
a screen	23
a screens	48
a screw	24
a screwed	17
a screws	27
a seal	-17
a sealed	26
a sec	20
a second	-47
a sections	25
a see	-19
a seeds	-32
a self	-28
a send	-21
a sense	-18
a series	-20
a serving	-24
a seventh	-16
a shakes	-17
a sharp	-51
a she	-18
a she'll	-24
a shed	20
a sheet	23
a sheets	16
a shift	-47
a shimmed	50
a shims	24
a shocking	-45
a short	83
a should	68
a show	-15
a showed	-36
a shower	-31
a shows	-27
a shut	-28
a side	16
a siding	34
a signal	-20
a signed	-39
a silicone	-29
a sill	68
a sink	36
a sits	-15
a sixteen	94
a sixty	-17
a skip	-23
a skip's	-20
a slab	16
a slats	-26
a slider	20
a slope	42
a sloppy	30
a slow	-25
a smokes	-26
a snapped	-38
a so	35
a sockets	-16
a soft	32
a solid	-21
a some	35
a something	-23
a sorry	-24
a spacer	-23
a spaces	39
a spare	18
a spares	35
a speed	-25
a speeds	-17
a split	-21
a spots	-35
a spout	15
a spraying	22
a spring	-58
a sprinkler	26
a st	-34
a stage	-50
a stain	-22
a stainless	17
a stair	-18
a standing	-22
a stars	-49
a started	-39
a starting	-19
a station	28
a stay	-45
a steep	64
a step	-65
a steps	-28
a stick	21
a still	-53
a stock	73
a stocks	48
a stone	-25
a stool	-43
a stopped	-22
a storefront	25
a straight	-29
a straps	21
a street	-24
a strikes	-55
a strings	34
a stuck	-24
a stud	32
a studs	82
a style	31
a subcool	39
a subfloor	21
a subs	-31
a sugars	-30
a summer	-19
a sunday	-66
a super	-17
a superheat's	20
a supposed	25
a sure	-20
a swapped	-17
a sweet	-39
a switch	40
a tag	-21
a take	42
a tall	31
a tap	43
a tape	38
a taped	29
a tapos	-27
a tax	-22
a tempered	19
a template	-25
a tenner	-21
a tens	24
a tested	-18
a than	-15
a that	-32
a thats	20
a their	-20
a then	-16
a there	19
a theres	23
a thermometer	20
a these	53
a they	-21
a they're	45
a thick	16
a thing	-122
a things	-30
a thirteen	20
a this	-66
a though	15
a thousand	-44
a threaded	37
a threshold	-20
a through	-28
a throughout	19
a thurs	-42
a thursday	-25
a tied	42
a tighter	31
a til	-27
a tile	22
a tile's	38
a time	-35
a times	-74
a timesheet	-29
a tip	-28
a tkt	-35
a to	31
a together	-73
a toilet	23
a toilets	33
a too	-35
a took	-17
a torn	-15
a torqued	-17
a total	40
a touch	-46
a towel	17
a track	-28
a travelers	-17
a tread	-38
a treated	23
a treinta	39
a tries	61
a triplex	-23
a tripped	-31
a tube	40
a tubes	-24
a tubs	25
a tuesday	-50
a turns	18
a twelves	15
a two	22
a twos	26
a type	80
a u	-25
a uncles	-18
a underside	28
a units	31
a unopened	28
a until	33
a us	-79
a usb	21
a used	48
a v	-26
a valve	-24
a valve's	-25
a van	27
a vent	17
a vinyl	18
a voicemails	-19
a voices	-31
a volt	26
a wafers	20
a wait	30
a walk	-35
a walked	-30
a wall	37
a walls	17
a want	44
a was	-43
a washer	-30
a wasn't	-15
a waste	57
a watch	-21
a water	-56
a wave	-16
a wax	-40
a way	-22
a ways	-28
a we	29
a we're	-25
a wednesday	26
a weekend	40
a went	-17
a were	22
a what	37
a what's	21
a whatever	-33
a when	-18
a where	53
a which	20
a while	34
a white	29
a who	-31
a whole	-25
a wide	47
a will	72
a wind	-15
a window	-55
a windows	37
a wiped	-22
a wire	-29
a wire's	26
a wires	22
a without	-26
a woman	-19
a wont	-24
a wood	-21
a work	18
a works	-28
a worth	-25
a would	-16
a wouldn't	-123
a wrongs	-41
a x	68
a y	50
a yard	-100
a year	-37
a yesterday	16
a you	-35
a you're	29
a zerks	17
a zip	-54
b a	-29
b about	27
b above	27
b absent	-64
b acid	-30
b across	34
b acts	-34
b add	76
b addition	-35
b address	-19
b adds	34
b adhesive	30
b again	-41
b against	46
b ahu	-16
b ain't	22
b air	48
b aisle	-18
b alarm	-38
b alarm's	-35
b all	36
b allow	92
b alone	-22
b already	26
b alright	-19
b also	-15
b am	-29
b amp	73
b amps	115
b an	-44
b anchors	16
b another	-42
b any	18
b anything	52
b apart	49
b apiece	41
b apprentice	-55
b apt	-45
b apto	-22
b aquastat	36
b architect	36
b are	68
b area	-20
b arm	-22
b arrived	51
b as	29
b ask	-19
b asked	35
b asking	-22
b attic	-16
b away	17
b b	-77
b back	-23
b backfill	59
b bad	-29
b badge	-62
b baffles	17
b bags	34
b bakkie	-17
b balance	16
b bars	33
b base	27
b basement	-60
b basin's	21
b batten	20
b battery's	-53
b batts	-32
b bay	-70
b bays	-36
b bead	20
b beam	25
b bearing	-27
b bearings	55
b beat	-17
b because	50
b bed	-93
b bedroom	-66
b bedrooms	-27
b been	-15
b before	-32
b behind	-28
b belts	20
b beltway	-93
b bench	42
b bent	15
b best	-15
b bet	-31
b better	27
b between	-84
b bid	-51
b big	-59
b bill	-29
b billed	-22
b bin	-43
b birdied	-28
b birds	-15
b black	66
b blacks	-33
b blade	-19
b blast	20
b bldg	-38
b blew	16
b blinks	-17
b blocks	-23
b blockwork	-15
b blood	-80
b blow	41
b blower	21
b bluestone	-18
b board's	23
b boards	39
b bogeyed	-25
b bolted	19
b bolts	37
b bond's	-22
b booked	-41
b boring	-27
b boss	-42
b both	-41
b bottom's	18
b bought	42
b bout	34
b box	-27
b bracket	-38
b bracket's	-32
b brackets	30
b brass	39
b breaker	-72
b breaker's	62
b breakers	41
b bring	140
b bringing	24
b broke	115
b broncos	-45
b bronze	18
b brother	30
b brought	89
b buckets	15
b builder	-18
b building	-42
b built	-27
b bulb	22
b bump	29
b bundles	70
b bunnings	-16
b burned	34
b bus	-25
b busted	-30
b but	32
b buy	76
b buzz	74
b by	-21
b cabin	-25
b call	37
b calls	31
b cam	-61
b came	76
b camera	-24
b can	33
b can't	-18
b cans	33
b cap	28
b capacitor's	21
b capped	-15
b caps	27
b card	19
b carpet	-26
b carriage	18
b cart	-38
b carton	16
b cases	30
b casing	-24
b cat	-23
b cats	-17
b caulk	-18
b cause	26
b ceiling's	42
b cell	-25
b center	37
b centered	15
b centres	17
b cfm	71
b ch	-36
b chair	19
b change	29
b changed	30
b channel	-55
b charge	-46
b charged	-58
b charger	47
b charging	-35
b chelsea	-22
b chimney	-29
b chlorine's	54
b choir's	-43
b chrome	23
b cinco	24
b circuit	-80
b ckts	-35
b claim's	-31
b class	-54
b clean	-35
b cleaned	21
b cleanouts	18
b clear	19
b clearance	17
b clip	19
b clips	28
b close	50
b closer	30
b closes	-55
b co	27
b coat	-34
b code	-36
b code's	-58
b cold	36
b cold's	37
b collar	30
b color	-26
b colorbond	34
b colour	-26
b column	-42
b coming	-50
b commission's	-18
b compacted	32
b compaction	15
b compaction's	18
b contact	16
b control	35
b copper	15
b corner	39
b corta	74
b count's	39
b counted	-18
b counter	-66
b counter's	48
b counting	-19
b counts	36
b cover	54
b cover's	73
b covers	22
b cracked	31
b cracks	17
b crane's	-44
b crawl	17
b crew	18
b crooked	-20
b crown's	16
b crowned	30
b cubic	-20
b curb's	29
b curtain	-41
b curtain's	-19
b curve	19
b customer	-37
b cut	102
b cutout	23
b cuts	19
b cutting	-19
b cycle	-17
b cycled	-23
b damper	20
b dash	-38
b date	-21
b dates	-16
b day	-75
b days	46
b de	24
b deal	-32
b debe	23
b deductible's	-40
b deep	32
b degree	37
b degrees	18
b delta's	44
b den	53
b desk	-30
b detail	-17
b detectors	16
b diagonals	90
b dial's	-17
b dialed	17
b didn't	-26
b diferencia	28
b digits	-67
b dimmers	69
b dip	-29
b dirt	26
b disconnect	18
b dispenser	20
b display	-63
b do	-47
b doc	-22
b doce	18
b dock	-26
b dog	-17
b doing	-46
b don't	-62
b donuts	-18
b door	-74
b door's	28
b doors	-15
b dos	41
b double	-43
b dowel	34
b dowels	16
b down	30
b downspouts	15
b downstairs	17
b draft's	51
b draw	31
b draw's	16
b drawer	-64
b draws	31
b drew	-36
b drill	-16
b drip	-25
b driver	-33
b drop	48
b drop's	24
b dropped	20
b drops	37
b drove	18
b drums	-19
b dry	47
b dryer	-24
b drywall	-57
b drywall's	20
b dug	22
b dumpsters	35
b dwangs	19
b dynamic	20
b e	-23
b each	41
b east	-32
b egress	-20
b eight	44
b eighth	21
b eighths	61
b el	22
b elbows	19
b electrician	-24
b elevation	-28
b elevator	-64
b eleven	-17
b em	-42
b embed	44
b emt	22
b end	15
b end's	-45
b ended	34
b ends	-60
b entry	-15
b error	-53
b eta	-39
b exam	-32
b existing	15
b exit	-44
b expires	-92
b exposure's	59
b extension	-28
b extension's	-34
b exterior	-48
b eyes	-37
b f	44
b falls	-37
b family	20
b far	22
b faucet	17
b fault	-21
b fee	-18
b feeder	-19
b feeding	19
b feeds	-22
b fell	54
b fifteen	69
b figure	42
b filter	32
b filter's	25
b filters	-19
b final	-19
b finally	-21
b fine	24
b fingers	-16
b finished	-60
b first	31
b fitted	-16
b fives	23
b fix	-27
b fixed	-26
b flashes	-108
b flat	-79
b flew	-17
b flight	-63
b flights	-27
b flip	18
b floor	-40
b floors	-16
b flowing	56
b flue	30
b foot	43
b footer	-18
b footers	31
b footing's	26
b footy's	-18
b form	19
b forms	25
b found	71
b four	25
b fourteen	49
b fourth	-55
b frame	-28
b frame's	29
b fresh	-16
b friday	-16
b from	-31
b front	19
b ft	42
b furnace	32
b g	-35
b gallons	-39
b game	-23
b gap	22
b gap's	-18
b garage	64
b gas	-62
b gate	-100
b gates	17
b gauge	38
b gauged	25
b gave	31
b generator	55
b get	75
b gets	52
b gimme	92
b give	-46
b gives	-39
b glass	28
b goal	-45
b good	28
b gpm	16
b gr	38
b grab	42
b grabbed	25
b gray	-33
b green	-55
b grid	19
b grille	19
b grit	33
b grout's	56
b guess	33
b guide	-42
b gutter's	-16
b guys	-27
b hallway	26
b handrail's	33
b hang	24
b hangers	31
b hanging	28
b hank	-22
b happy	-93
b hard	20
b hardware	-60
b has	54
b hatch	-46
b haul	-62
b have	33
b hay	-18
b he	-117
b he'll	-30
b he's	-179
b head	49
b head's	37
b header	53
b header's	43
b headroom's	40
b heads	-27
b hearth's	31
b heat	24
b heater	-19
b height	42
b height's	32
b held	40
b her	23
b here	-22
b hes	-72
b hibs	-19
b high	61
b him	-56
b hinge	19
b hinges	-16
b his	-72
b hit	-34
b hits	43
b hockey	16
b hole	-30
b hole's	67
b holes	19
b holiday	-20
b homeowner's	18
b hook	-24
b hook's	20
b hoops	22
b horse	15
b hour	-41
b hour's	-88
b house	-25
b how	30
b hp	26
b hub	25
b humidity	47
b humidity's	36
b hundred	65
b hung	59
b hvac	24
b hwy	-35
b ice	-19
b if	35
b im	-82
b in	-48
b inch	21
b inlet's	30
b inn	-18
b innings	-20
b inside	22
b inspector	-64
b install	-24
b installed	18
b instead	15
b into	-21
b invert's	31
b invoice	-89
b ipad's	-42
b island	47
b it	36
b it'll	26
b it's	-54
b item	-33
b items	-47
b its	-21
b j	37
b jan	19
b job	-64
b job's	-29
b joint	-20
b joists	40
b jumper	-95
b just	79
b keep	55
b kept	50
b kerbs	28
b key	-69
b keyed	-37
b keynote	-16
b keys	-52
b kick	32
b kicks	107
b kid	-49
b kid's	-35
b kids	55
b kit	-20
b kitchen	42
b kits	21
b knees	-32
b knife	-17
b knocked	-34
b knots	40
b know	-15
b kpa	32
b kva	24
b l1	-24
b l2	-27
b la	-15
b laborer	25
b lad's	-26
b ladder	-30
b laid	52
b landing	21
b lands	-43
b lap	109
b last	21
b latillas	19
b lb	29
b lead	20
b leakage	31
b least	30
b leaves	81
b lee	23
b left	42
b leg	73
b lengths	59
b less	45
b let	-42
b level	-72
b lid	-20
b lifted	34
b light	-40
b lights	19
b like	-17
b lime	25
b limestone	24
b limit's	39
b line	-41
b lintel	21
b lintel's	26
b list	-16
b litres	26
b live	18
b load	-21
b load's	-21
b loads	-18
b lock	21
b lockbox	-17
b locked	-18
b locker	-23
b lol	-27
b long	-86
b longer	-32
b look	-34
b looking	38
b loop	-54
b loose	17
b lost	20
b lot	-124
b lote	-18
b lounge	46
b low	61
b lp	-30
b lp2	-35
b lumber	-18
b lumber's	-35
b lvl's	40
b m	-64
b m2	28
b made	-50
b make	112
b makes	-16
b man	-28
b man's	-37
b marble	22
b march	-19
b mark	-58
b marked	-48
b married	-19
b materials	-56
b max	32
b maximum	25
b maybe	57
b me	30
b mean	-21
b meant	18
b measure	-22
b measures	-24
b medallion	17
b media	-18
b medium	45
b meeting	-17
b meter	43
b metered	17
b middle	19
b mil	19
b mile	-19
b millimetre	56
b mils	18
b min	34
b minimum	17
b minus	28
b minute	25
b minutes	-28
b mirror	30
b mirror's	25
b missing	52
b miters	51
b mix	55
b mixed	47
b mm	56
b mock	-26
b mode	-39
b model	-15
b module	16
b modules	26
b moisture	87
b moisture's	52
b mold	19
b mon	-33
b moon	-30
b more	18
b morning	41
b motor	48
b move	34
b moved	-86
b movers	39
b mpa	22
b mrs	-31
b ms	22
b mud	-16
b must	33
b my	-61
b n	-24
b nail	28
b nailed	31
b nails	34
b naw	18
b near	-16
b necesito	66
b need	69
b needs	87
b net	-44
b neutral's	23
b next	-63
b nfpa	-28
b night	-27
b nine	-20
b nineteen	-68
b nineteen's	26
b ninth	-36
b no	26
b nobody	-54
b nobody's	-57
b none	36
b noon	23
b north	24
b note	-51
b nothing	48
b now	75
b nozzle	-42
b nueve	23
b number	-166
b number's	-98
b nursery	38
b oak	29
b ocean's	-29
b oct	-21
b of	33
b offered	-82
b office	-25
b offset	20
b oh	-64
b ohm	28
b ohms	54
b oil	-33
b okay	-74
b old	-52
b on	-21
b ones	42
b only	75
b opened	-17
b opener	27
b opening	37
b opening's	21
b opens	-32
b ordered	34
b ot	-23
b ought	16
b our	-66
b out	32
b outlet	-38
b outside	17
b outta	-17
b oven	21
b overhang's	23
b owes	-23
b own	19
b owner	-24
b owns	-23
b p	-57
b pack	-35
b package	26
b packed	39
b packers	-45
b packs	77
b pad	20
b padlock's	-32
b page	-42
b paid	-60
b paint	-28
b paint's	-19
b painted	-39
b pair	-28
b pan	-32
b pan's	17
b panel	-38
b panel's	16
b pantry	19
b parked	-15
b parks	-29
b part	-47
b parts	20
b past	-44
b patio	22
b pavers	37
b pay	-23
b pcs	-54
b pegged	19
b per	-15
b percent	53
b permit	-32
b ph	60
b phase	-27
b phone	-49
b phone's	-37
b pick	56
b pickets	99
b pieces	53
b pier	-39
b pin	-83
b pipe	57
b pipe's	24
b pitch	21
b pitched	-23
b place	-42
b plan	22
b plans	60
b plaster	39
b plates	27
b please	42
b plinth	32
b plot	-24
b plumber	-39
b plumber's	-20
b plus	64
b po	-39
b point	-65
b point's	17
b pole	-31
b pole's	-24
b poles	21
b poly	-27
b pool	-15
b popped	-40
b population's	-16
b porch	-29
b port	-18
b posts	-15
b pounds	25
b pour	-41
b power's	-32
b precharge	16
b preheat	25
b press	-22
b pressure	31
b pri	22
b prob	27
b profile's	20
b prv's	38
b psalm	-26
b psi	34
b pu	16
b pulgadas	18
b pull	33
b pulled	-41
b pulling	70
b pulls	22
b pump	-20
b pump's	39
b pumped	65
b purlins	35
b put	67
b puts	27
b qty	62
b quarter	-20
b quiet	-20
b quit	-26
b quote	-18
b quoted	-52
b r	-74
b race	-42
b rack	-66
b radio's	-23
b rafters	54
b rail's	22
b raise	71
b ramp	16
b range	48
b rapid	-40
b rate's	-16
b rated	19
b rather	-16
b ratio's	87
b rcbo	25
b rcbo's	17
b re	-20
b read	47
b reading	59
b reads	93
b ready	-31
b rebar's	30
b rebuilt	16
b recirc	49
b red	-28
b register's	30
b relief	41
b rental	-44
b replace	50
b report	-23
b required	20
b rest	17
b retorno	28
b return	53
b return's	43
b returned	38
b returns	30
b rev	23
b reveal's	40
b rfi	-18
b rh	26
b ridge	37
b right	-67
b rip	34
b rise	79
b riser	-36
b risers	16
b rm	-110
b rock	56
b rod	39
b rod's	23
b rolled	-40
b roller	25
b rolls	-24
b room	-60
b rotors	-32
b rough	16
b roughed	31
b roughly	34
b round	-54
b route	-17
b row	-45
b rows	16
b rtu	-91
b run	31
b run's	32
b running	29
b s	22
b safe	-46
b same	-16
b sand	-16
b saturday	-35
b saves	-24
b saw	19
b saying	26
b scaff	34
b scale	-83
b scarf	74
b sch	-47
b sconces	16
b screen	30
b screw	-30
b screwed	31
b screws	34
b scuff	36
b seal	-43
b sealed	-15
b seam	-25
b seat's	-36
b sec	-18
b second	-19
b section	-53
b sending	17
b sent	87
b ser	23
b service	18
b serving	-27
b set	146
b sets	-67
b setting	-47
b seventy	68
b sf	22
b shade	-16
b shave	42
b she	-61
b she'll	-66
b she's	-62
b shedding	-33
b shedding's	-21
b sheet	-58
b sheets	42
b shell's	-29
b shellac	40
b shelves	39
b shelving	-47
b shift's	-31
b shld	17
b shop	-32
b shop's	-17
b short	74
b shorted	70
b should	69
b should've	57
b shower	-52
b showing	-16
b shows	58
b shut	-18
b shy	33
b side	69
b side's	49
b sign's	31
b silicone	37
b sill	51
b sill's	54
b since	-78
b single	-15
b sink	20
b siri	-25
b sister	33
b site	-54
b six	42
b sixteen	20
b sixteenth	-48
b sixty	68
b slab	47
b slab's	53
b sleeper's	23
b slope	-16
b slope's	31
b slump	118
b smoking	-38
b smoko	-57
b snake	-37
b so	23
b sobran	18
b soft	36
b sold	70
b solid	-30
b some	44
b somebody	41
b someone	-20
b something	-21
b sometime	-73
b somewhere	95
b sorry	23
b south	18
b space	21
b spaced	56
b spacer	31
b spacing	46
b span's	21
b spare	27
b spec	52
b spent	-32
b sphere	51
b spot	-19
b springs	19
b spurs	-17
b sqm	-15
b squad	-15
b squares	26
b squeak	30
b squeaks	-20
b st	-18
b stack	26
b stage	-36
b stainless	29
b stair	-28
b stairs	-21
b standing	23
b start	-50
b started	-62
b starter	24
b starting	-45
b starts	-26
b stat	34
b stat's	31
b static	110
b static's	50
b station	-34
b stay	18
b stem	27
b step	-55
b step's	49
b steps	-25
b sticks	41
b stirrups	75
b stitch	-24
b stock	31
b stock's	-27
b stool	-34
b stop	-17
b straps	16
b street	19
b strike	-19
b string	25
b stringer	16
b strings	16
b strips	22
b stub	22
b studio	-23
b studs	65
b stuff	41
b style	16
b sub	-27
b subcool	53
b subcool's	15
b subfloor	35
b subfloor's	19
b suction's	20
b suite	-53
b summer	-34
b sunday	19
b super	-20
b superheat	35
b superheat's	47
b supply	47
b supply's	54
b swap	35
b sweet	-36
b swing	-40
b switch	-26
b t	18
b table	-107
b tag	-53
b tagged	-18
b take	-33
b takes	-27
b talks	-35
b tall	25
b tap	45
b tapon	-18
b tapped	-16
b team's	-49
b temp	91
b tempered	15
b tenant	-23
b terms	-75
b test	-25
b tested	50
b th	-57
b than	28
b that	-30
b that'll	-25
b that's	-24
b their	-23
b them	31
b then	-32
b there	-22
b thermometer	29
b thermostat's	51
b they	-29
b they'll	-38
b they're	-73
b they've	-19
b thick	21
b thin	29
b think	-19
b thinks	-24
b thinned	50
b thirteen	47
b this	-36
b those	34
b though	26
b throat's	57
b through	-21
b throw	66
b throwing	-36
b throws	-43
b thurs	-18
b ticket	-41
b tide's	-54
b tie	28
b ties	37
b tight	23
b til	-40
b tile	21
b tiles	24
b till	-27
b time	-50
b times	-15
b tip	-21
b tires	-43
b title	-18
b to	32
b today	-23
b together	-28
b toilet	57
b tomorrow	-58
b ton	34
b too	30
b toolbox	-23
b top	-32
b topped	22
b torque	80
b total	39
b touch	27
b touched	27
b tracking	-25
b trailer	-55
b trap	27
b tray	23
b tread	-44
b treated	-17
b trench	29
b trim	31
b trimmed	23
b tripped	-44
b tripping	16
b truck's	-75
b tube	20
b tubes	-18
b tune	-84
b turned	-36
b turning	-22
b turns	-20
b twenty	45
b twice	23
b two	24
b txt	-16
b type	-96
b u	-95
b uf	27
b under	31
b unit	-116
b unit's	-16
b uppers	22
b upsize	38
b upstairs	18
b upstand's	27
b us	31
b use	58
b used	106
b valve	63
b valve's	18
b van	34
b vanity	63
b vent	37
b ver	-17
b vikings	-44
b volt	-15
b voltage	68
b volts	17
b voted	-26
b vs	18
b wait	34
b waiting	17
b walk	-36
b wall	29
b wallpaper	-18
b walnut	-40
b wanna	44
b want	57
b wanted	22
b wants	51
b wardrobe	-49
b was	24
b wash	-35
b washer	-15
b waste	27
b water's	39
b wax	-24
b way	-34
b ways	-20
b we	27
b we're	-64
b we've	36
b wednesday	-16
b wee	-41
b week	-30
b well	16
b wet	56
b what	-31
b wheel	-22
b when	31
b which	-22
b white	-33
b who's	-62
b wide	72
b width	25
b will	29
b window	-54
b wire's	31
b with	49
b within	19
b won't	16
b work	-28
b working	-22
b worn	18
b worth	-21
b would	40
b wrapped	-17
b wrong	18
b x	65
b xfmr	28
b y	18
b years	-23
b yesterday	25
b yet	20
b you	-18
b your	-46
b zero	-65
b zone	-73
b zz	-31
b ×	28
bare 1	-57
bare 2	47
bare 3	32
behind area area	20
behind area crews'	-63
behind area defect	-28
behind area fixture	-41
behind area mark	-62
behind area material	-27
behind area part	-40
behind break mark	-145
behind break material	44
behind crews' crews'	22
behind crews' end	-66
behind crews' mark	18
behind crews' material	56
behind crews' number	43
behind crews' part	59
behind crews' plain	25
behind crews' strange	41
behind crews' surface	21
behind crews' unknown	-34
behind defect crews'	-23
behind defect mark	23
behind defect others'	-25
behind defect plain	36
behind end area	-32
behind end crews'	26
behind end defect	123
behind end finish	-56
behind end fixture	41
behind end mark	-77
behind end material	33
behind end part	66
behind end plain	43
behind end strange	-62
behind end unknown	-19
behind end verb	-57
behind finish area	-28
behind finish crews'	26
behind finish end	-39
behind finish mark	-25
behind finish plain	16
behind finish verb	18
behind fixture crews'	-31
behind fixture defect	-35
behind fixture end	-33
behind fixture others'	-36
behind fixture part	-26
behind fixture plain	-23
behind fixture verb	-20
behind mark break	-16
behind mark crews'	39
behind mark defect	32
behind mark end	-26
behind mark finish	18
behind mark fixture	50
behind mark mark	-45
behind mark number	70
behind mark others'	-25
behind mark part	28
behind mark surface	-32
behind mark tool	20
behind mark unknown	27
behind material defect	-20
behind material fixture	-46
behind material material	29
behind material others'	38
behind material plain	21
behind material unknown	41
behind number end	-36
behind number number	-51
behind number part	18
behind number unknown	-19
behind number verb	23
behind others' break	-17
behind others' end	79
behind others' finish	15
behind others' mark	72
behind others' others'	24
behind others' part	-26
behind others' plain	47
behind others' role	-69
behind others' surface	-41
behind others' unknown	-32
behind others' verb	-22
behind part defect	-43
behind part material	-43
behind part plain	-54
behind part verb	-23
behind plain area	67
behind plain crews'	16
behind plain defect	38
behind plain end	29
behind plain mark	67
behind plain material	77
behind plain part	52
behind plain strange	-29
behind plain tool	54
behind plain verb	20
behind role crews'	60
behind role end	-18
behind role mark	-23
behind strange crews'	-21
behind strange end	-15
behind strange mark	15
behind strange plain	-41
behind strange strange	-27
behind strange verb	-19
behind surface defect	-34
behind surface end	54
behind surface fixture	32
behind surface others'	-26
behind surface part	-47
behind surface plain	-37
behind surface surface	31
behind tool end	-66
behind tool plain	-43
behind unknown end	-103
behind unknown mark	-54
behind unknown material	-48
behind unknown number	-51
behind unknown others'	-25
behind unknown part	-27
behind unknown plain	-45
behind unknown strange	18
behind unknown verb	47
behind verb crews'	-68
behind verb end	-16
behind verb mark	38
behind verb material	-37
behind verb others'	-30
behind verb part	-17
behind verb plain	-27
behind verb strange	-32
behind verb unknown	-17
claims 2	-38
counted head area	48
counted head crews'	15
counted head defect	-26
counted head finish	-18
counted head fixture	35
counted head material	113
counted head others'	-154
counted head part	119
counted head plain	-42
counted head role	-80
counted head strange	-69
counted head surface	71
counted head tool	55
counted head unknown	31
counted head verb	-19
counted next defect	34
counted next fixture	38
counted next mark	-61
counted next material	65
counted next others'	-31
counted next part	37
counted next role	-80
counted next strange	-49
counted next surface	-20
counted next tool	59
counted next verb	-20
counted next work	-33
form 0figures 3	-19
form 0figures 4	-72
form figures 2	41
form figures 4	-42
form figures 5	-21
form oh	-59
form parts	75
form swallowed round	-18
head 1	50
head 2	23
head 3	53
l of cars	-36
l of clock	-112
l of kin	-59
l of money	-51
l of papers	-43
l of past	28
l of phones	-56
l of roads	-118
l of school	-42
l of services	-22
l of sport	-41
l1 	32
l1 
	-79
l1 "	35
l1 #	-21
l1 $	-109
l1 &	15
l1 (	26
l1 +	51
l1 ,	66
l1 -	-76
l1 .	22
l1 /	24
l1 14	17
l1 204	18
l1 3	-16
l1 :	70
l1 @	31
l1 a	22
l1 about	24
l1 add	64
l1 adds	34
l1 after	-89
l1 against	32
l1 aisle	-18
l1 alarm's	-17
l1 all	95
l1 allow	45
l1 also	26
l1 amp	15
l1 an	-64
l1 and	106
l1 another	-32
l1 apartment	-30
l1 apt	-45
l1 are	40
l1 around	-16
l1 asking	-22
l1 at	25
l1 b	-33
l1 back	20
l1 backfill	59
l1 balance	16
l1 bars	30
l1 bath	-91
l1 bath's	19
l1 bay	-104
l1 be	65
l1 beam	39
l1 bed	-84
l1 bedroom	-119
l1 been	35
l1 before	-58
l1 between	-24
l1 big	-65
l1 bin	-44
l1 birds	-15
l1 bldg	-37
l1 blowing	28
l1 bogeyed	-25
l1 boring	-27
l1 bottom	-29
l1 bottom's	15
l1 bought	81
l1 bout	34
l1 box	-33
l1 brass	18
l1 breaker	-84
l1 bring	108
l1 broke	25
l1 brought	76
l1 builder	-18
l1 building	-48
l1 bus	-25
l1 but	44
l1 buy	88
l1 by	28
l1 called	-16
l1 can	27
l1 cat	-34
l1 ceiling's	17
l1 ch	-36
l1 change	35
l1 channel	-51
l1 charging	-35
l1 check	-21
l1 cinco	20
l1 circuit	-91
l1 class	-44
l1 closet	36
l1 coat	-45
l1 code	-96
l1 code's	-49
l1 cold's	37
l1 corta	39
l1 count's	26
l1 counter	-21
l1 cover	22
l1 cover's	61
l1 crowned	28
l1 cut	55
l1 dash	-19
l1 day	-109
l1 deck	-20
l1 deductible's	-40
l1 delta's	44
l1 den	17
l1 diferencia	28
l1 dirt	25
l1 do	-29
l1 dock	-26
l1 done	30
l1 door	-86
l1 double	-53
l1 dowels	16
l1 drawer	-56
l1 drawing	-21
l1 drew	-34
l1 drop	-26
l1 drops	33
l1 drove	19
l1 dynamic	20
l1 e	-23
l1 each	-55
l1 edge	35
l1 eight	-26
l1 elevator	-18
l1 eleven	-33
l1 embed	44
l1 end's	-34
l1 ends	-28
l1 error	-53
l1 eta	-24
l1 except	31
l1 exit	-67
l1 expires	-51
l1 exposure's	59
l1 extension	-17
l1 extension's	-34
l1 exterior	-32
l1 eyes	-37
l1 f	-32
l1 falls	-20
l1 fault	-17
l1 feeder	-19
l1 fell	54
l1 fine	-16
l1 finished	-28
l1 first	-31
l1 five	-38
l1 flashes	-78
l1 flat	-76
l1 floor	-63
l1 foot	36
l1 forward	50
l1 found	59
l1 four	-56
l1 fourteen	-54
l1 frame	-18
l1 fresh	-22
l1 from	-38
l1 front	46
l1 full	24
l1 g	-18
l1 garage	75
l1 gate	-33
l1 get	148
l1 gets	67
l1 gimme	92
l1 go	16
l1 going	41
l1 gone	-30
l1 good	-38
l1 got	129
l1 grab	80
l1 grabbed	31
l1 grade	-39
l1 half	-17
l1 hall	69
l1 hand	32
l1 has	98
l1 have	83
l1 he's	-107
l1 head	18
l1 headroom's	29
l1 hearth's	31
l1 heater	-15
l1 height	43
l1 height's	23
l1 here	32
l1 hibs	-21
l1 hinges	21
l1 hit	-36
l1 hole	-57
l1 hole's	23
l1 hooks	19
l1 hoops	22
l1 hour's	-45
l1 house	-19
l1 hub	24
l1 humidity's	31
l1 hundred	-28
l1 hung	46
l1 hwy	-22
l1 i've	32
l1 im	-41
l1 in	-68
l1 inch	65
l1 install	-22
l1 installed	18
l1 invert's	31
l1 invoice	-38
l1 is	33
l1 island	16
l1 it	74
l1 it's	-49
l1 item	-29
l1 items	-20
l1 job	-45
l1 job's	-29
l1 jumper	-35
l1 just	104
l1 kept	64
l1 kerbs	28
l1 key	-63
l1 keynote	-16
l1 kid's	-31
l1 kitchen	48
l1 knock	24
l1 knocked	-26
l1 la	-16
l1 laborer	60
l1 lad's	-26
l1 ladder	-21
l1 laid	32
l1 landing	19
l1 lap	53
l1 last	19
l1 latillas	19
l1 least	71
l1 leaves	76
l1 left	20
l1 level	-77
l1 limit's	39
l1 line	-93
l1 lintel	20
l1 lintel's	26
l1 long	-64
l1 longer	-17
l1 loop	-56
l1 lost	25
l1 lot	-147
l1 lp	-30
l1 lvl	-40
l1 m	-30
l1 make	47
l1 makes	-16
l1 man's	-37
l1 mark	-40
l1 maybe	105
l1 me	39
l1 meant	18
l1 measure	-37
l1 measured	18
l1 minus	28
l1 miters	16
l1 mm	-26
l1 mode	-39
l1 moisture	18
l1 mold	15
l1 mon	-28
l1 morning	25
l1 my	16
l1 nd	-21
l1 necesito	47
l1 need	152
l1 needs	45
l1 net	-45
l1 neutral's	23
l1 new	-103
l1 nine	-28
l1 nineteen	-16
l1 no	-15
l1 nobody's	-58
l1 not	47
l1 note	-51
l1 now	59
l1 nozzle	-42
l1 number	-229
l1 number's	-85
l1 ocean's	-29
l1 oct	-20
l1 of	-42
l1 offered	-25
l1 oh	-45
l1 old	-81
l1 on	-19
l1 ones	62
l1 only	94
l1 open	-50
l1 or	-16
l1 ordered	56
l1 other	-16
l1 ought	-16
l1 out	92
l1 outlets	17
l1 outside	40
l1 outta	-18
l1 over	18
l1 overhang's	23
l1 owns	-23
l1 p	-52
l1 packers	-20
l1 page	-37
l1 paid	-16
l1 pan's	16
l1 panel	-23
l1 panel's	16
l1 part	-31
l1 past	-32
l1 patch	-30
l1 pier	-38
l1 pile	20
l1 pin	-21
l1 plate	30
l1 plot	-24
l1 plus	69
l1 po	-17
l1 point	-32
l1 population's	-16
l1 port	-16
l1 poured	18
l1 pressure's	-26
l1 pri	22
l1 profile's	20
l1 psalm	-26
l1 pull	37
l1 pulled	18
l1 pulling	37
l1 pump	-18
l1 put	62
l1 quarter	93
l1 quoted	-45
l1 r	-82
l1 rack	-30
l1 ran	51
l1 rate's	-16
l1 rated	39
l1 ratio's	48
l1 read	54
l1 reading	38
l1 reads	45
l1 ready	-18
l1 recirc	49
l1 red	39
l1 replace	19
l1 replaced	33
l1 returned	17
l1 rev	-16
l1 reveal's	20
l1 rfi	-18
l1 rh	18
l1 right	-64
l1 rise	55
l1 riser	-32
l1 rm	-117
l1 rolled	-39
l1 room	-115
l1 roughly	34
l1 row	-46
l1 rtu	-25
l1 rule	-22
l1 run	34
l1 running	16
l1 sags	19
l1 same	-18
l1 saves	-24
l1 say	33
l1 says	38
l1 scaff	34
l1 sch	-53
l1 seat's	-36
l1 second	-21
l1 section	-42
l1 see	26
l1 send	27
l1 sent	35
l1 ser	23
l1 serving	-27
l1 set	53
l1 shave	42
l1 she's	-63
l1 sheet	-56
l1 sheets	36
l1 shelf	-39
l1 short	62
l1 shot	-17
l1 shower	-17
l1 shows	35
l1 shy	32
l1 side	16
l1 sides	-30
l1 since	-38
l1 sister	29
l1 six	22
l1 sixteen	-16
l1 sixty	-17
l1 size	-16
l1 sleeper's	23
l1 slide	-42
l1 slope's	31
l1 slump	22
l1 so	98
l1 sobran	18
l1 solid	-30
l1 sorry	-16
l1 spacing	17
l1 span's	21
l1 spec	17
l1 spent	-30
l1 spurs	-17
l1 squad	-15
l1 square	-49
l1 stack	18
l1 stage	-36
l1 stair	-29
l1 starter	24
l1 static	54
l1 static's	30
l1 station	-39
l1 step	-32
l1 step's	17
l1 still	59
l1 stone	37
l1 strike	-45
l1 stuck	27
l1 studio	-25
l1 subcool	35
l1 suite	-55
l1 superheat	19
l1 superheat's	17
l1 swap	36
l1 sweet	-18
l1 switch	-59
l1 t	18
l1 table	-18
l1 tag	-39
l1 take	33
l1 takes	-27
l1 talks	-35
l1 tank	-15
l1 temp	33
l1 ten	-37
l1 th	-38
l1 than	27
l1 that	-104
l1 that's	-16
l1 the	-105
l1 them	-15
l1 then	-27
l1 there	-26
l1 they're	-18
l1 thing	-47
l1 this	-35
l1 those	18
l1 throat's	57
l1 throw	43
l1 thursday	25
l1 ticket	-18
l1 til	-53
l1 till	-64
l1 title	-18
l1 to	57
l1 tomorrow	36
l1 took	69
l1 top	-35
l1 tread	-48
l1 truck	-48
l1 turned	-34
l1 turning	-22
l1 twelve	-42
l1 twenty	-16
l1 two	24
l1 two's	24
l1 type	-63
l1 under	99
l1 unit	-159
l1 up	40
l1 us	48
l1 use	29
l1 used	100
l1 vanity	28
l1 ver	-17
l1 vikings	-25
l1 voltage	67
l1 volts	17
l1 vs	18
l1 wall	49
l1 wall's	28
l1 want	65
l1 wanted	20
l1 wants	42
l1 was	79
l1 washer	-33
l1 we're	38
l1 well	40
l1 which	-19
l1 white	-32
l1 window	-42
l1 with	27
l1 working	-20
l1 wrong	-21
l1 x	100
l1 y	18
l1 you	-19
l1 your	-58
l1 zone	-138
l1 £	-70
l1 ×	28
l1. "	35
l1. #	28
l1. $	-109
l1. &	15
l1. 's	94
l1. (	26
l1. +	51
l1. ,	66
l1. -	-76
l1. -ed	62
l1. -ing	38
l1. -ly	69
l1. -s	74
l1. .	22
l1. /	-59
l1. 1	-63
l1. :	70
l1. @	31
l1. Name	-103
l1. letter	-57
l1. one	-114
l1. unit	-48
l1. £	-70
l2 	-17
l2 
	55
l2 '	46
l2 (	38
l2 ,	19
l2 1	-59
l2 11	34
l2 112	-30
l2 118	-22
l2 1400	-16
l2 15	22
l2 18	-24
l2 180	31
l2 31	-28
l2 34	16
l2 4	-24
l2 400	-26
l2 41	34
l2 47	-37
l2 482	22
l2 5	-18
l2 555	-21
l2 6	-59
l2 60	19
l2 600	36
l2 68	56
l2 8	24
l2 9	41
l2 95	-50
l2 a	-133
l2 across	-29
l2 acts	-34
l2 again	-25
l2 against	19
l2 allow	62
l2 already	25
l2 an	-42
l2 and	27
l2 anything	34
l2 apartment	34
l2 apprentice	-46
l2 aquastat	33
l2 architect	23
l2 are	39
l2 arrived	20
l2 asked	20
l2 at	-94
l2 away	21
l2 back	-20
l2 basement	27
l2 bath	-15
l2 battery's	-53
l2 bays	38
l2 be	46
l2 bedroom	18
l2 been	-19
l2 bench	37
l2 bet	-31
l2 billed	-22
l2 black	43
l2 blacks	-35
l2 blast	20
l2 blood	-39
l2 blue	-15
l2 bond's	-22
l2 booked	-19
l2 boss	-20
l2 both	-33
l2 bottom	22
l2 box	18
l2 boxes	46
l2 bracket	32
l2 breaker's	43
l2 broke	69
l2 brother	27
l2 bundles	89
l2 burned	27
l2 but	-55
l2 buzz	74
l2 by	-53
l2 call	89
l2 calls	23
l2 came	31
l2 cap	19
l2 caps	20
l2 ceiling's	25
l2 change	-69
l2 changed	25
l2 charged	-58
l2 check	-23
l2 chimney	-29
l2 chlorine's	54
l2 choir's	-31
l2 clearance	17
l2 close	28
l2 closer	32
l2 closes	-50
l2 closet	-18
l2 code	65
l2 color	-28
l2 column	-41
l2 comes	27
l2 coming	-36
l2 commission's	-18
l2 compacted	32
l2 compaction's	18
l2 control	22
l2 corner	23
l2 corners	-18
l2 count	-21
l2 counter's	33
l2 counts	18
l2 crew	40
l2 crown's	16
l2 curtain's	-19
l2 curve	18
l2 cut	76
l2 cycle	-17
l2 day	-19
l2 days	53
l2 debe	23
l2 diagonals	68
l2 dial's	-17
l2 dip	-29
l2 display	-65
l2 dog	-30
l2 don't	-91
l2 done	-47
l2 door	16
l2 dos	41
l2 dowel	25
l2 down	55
l2 draft's	46
l2 drawing	30
l2 dropped	29
l2 dryer	-28
l2 drywall	-28
l2 drywall's	17
l2 each	-18
l2 edge	-27
l2 eight	40
l2 eighteen	19
l2 en	-18
l2 epoxy	-23
l2 every	-20
l2 except	-28
l2 fan	-21
l2 far	19
l2 fault	-18
l2 fifty	-28
l2 finish	21
l2 fit	32
l2 five	16
l2 flange	19
l2 flights	-27
l2 floor	20
l2 flue	32
l2 footer	-18
l2 footers	17
l2 for	-69
l2 forty	-21
l2 forward	-48
l2 four	42
l2 fourth	-54
l2 friday	-36
l2 from	-49
l2 ft	34
l2 full	-63
l2 g	-18
l2 gap's	-19
l2 gas	-30
l2 gate	-24
l2 gave	47
l2 give	-40
l2 gives	-52
l2 glass	26
l2 going	-42
l2 good	59
l2 got	-21
l2 gotta	53
l2 grab	-30
l2 guy	40
l2 half	-35
l2 handrail	20
l2 hang	16
l2 happy	-62
l2 hardware	-60
l2 hatch	-16
l2 haul	-61
l2 have	51
l2 hdw	-16
l2 he	-32
l2 he's	-18
l2 head	45
l2 header	28
l2 header's	25
l2 heads	-18
l2 held	21
l2 here	-51
l2 hes	-37
l2 high	43
l2 hinges	-29
l2 his	-19
l2 hold	18
l2 hole	29
l2 hole's	23
l2 hook's	18
l2 hour	-17
l2 hours	-23
l2 house	-36
l2 humidity	26
l2 hundred	30
l2 hung	26
l2 i	89
l2 i'd	37
l2 in	-53
l2 inch	22
l2 inches	17
l2 inn	-18
l2 innings	-20
l2 inside	36
l2 instead	50
l2 invoice	-44
l2 ipad's	-42
l2 it'll	28
l2 it's	-18
l2 its	29
l2 joist	23
l2 joists	20
l2 keys	-62
l2 kid	-48
l2 kit	18
l2 knees	-32
l2 knots	40
l2 ladder	-19
l2 lands	-44
l2 lap	82
l2 left	67
l2 leg	61
l2 lengths	19
l2 less	30
l2 lime	25
l2 limestone	24
l2 load's	-21
l2 locked	-18
l2 long	-34
l2 loose	39
l2 lot	36
l2 low	70
l2 lvl	25
l2 m	29
l2 make	91
l2 man	-16
l2 marked	-19
l2 materials	-25
l2 maybe	-41
l2 me	-23
l2 medium	19
l2 meter	60
l2 mil	-32
l2 mile	-20
l2 missing	17
l2 mix	42
l2 mixed	18
l2 mm	34
l2 module	16
l2 moisture's	37
l2 mon	17
l2 monday	16
l2 moon	-20
l2 more	25
l2 morning	34
l2 nail	32
l2 necesito	20
l2 needs	22
l2 new	37
l2 nineteen	-28
l2 no	-89
l2 north	18
l2 not	-70
l2 number	-26
l2 of	-77
l2 of cars	-56
l2 of clock	-49
l2 of food	-39
l2 of kin	-47
l2 of money	-97
l2 of past	-17
l2 of roads	27
l2 of school	-70
l2 of sport	-33
l2 off	-71
l2 office	-21
l2 offset	20
l2 oh	-42
l2 ok	-28
l2 on	-57
l2 one	-44
l2 ones	27
l2 only	43
l2 opening	15
l2 ordered	-26
l2 ot	-23
l2 our	-21
l2 out	-37
l2 outlets	22
l2 owe	-36
l2 owes	-22
l2 packs	80
l2 pad	22
l2 paid	-33
l2 paint	-24
l2 panels	-16
l2 parks	-29
l2 passed	-32
l2 past	-34
l2 pay	-18
l2 pcs	-68
l2 per	-32
l2 permit	-19
l2 ph	19
l2 phone's	-37
l2 pick	88
l2 pickets	84
l2 pin	-30
l2 pipe	31
l2 pipe's	24
l2 plan	16
l2 plaster	19
l2 plastic	21
l2 plate	-28
l2 please	23
l2 posts	-17
l2 pounds	-18
l2 pour	-16
l2 pressure's	25
l2 prob	35
l2 prv's	38
l2 pumped	18
l2 purlins	27
l2 put	65
l2 puts	27
l2 qty	65
l2 quarter	-26
l2 quiet	-16
l2 r	-78
l2 race	-42
l2 rafters	25
l2 rail	31
l2 rail's	18
l2 raise	60
l2 ran	-62
l2 range	26
l2 rated	-24
l2 rather	-20
l2 re	-17
l2 ready	-34
l2 real	26
l2 rebar's	-37
l2 red	-58
l2 return	43
l2 return's	40
l2 risers	16
l2 rock	30
l2 room	-25
l2 rough	18
l2 round	-55
l2 rows	16
l2 rtu	-62
l2 sand	-28
l2 saturday	-26
l2 says	25
l2 scarf	36
l2 screwed	18
l2 screws	28
l2 see	-34
l2 sent	25
l2 set	109
l2 sets	-77
l2 seven	-18
l2 seventy	20
l2 she'll	-59
l2 shedding's	-22
l2 shelf	41
l2 shift's	-31
l2 shim	20
l2 shop	-24
l2 short	39
l2 shorted	69
l2 shot	61
l2 should	60
l2 should've	35
l2 sill	38
l2 sill's	41
l2 site	-20
l2 six	-35
l2 sixteenth	-58
l2 sixty	37
l2 slump	46
l2 smokes	-27
l2 smoking	-38
l2 snake	-37
l2 so	16
l2 soft	32
l2 sometime	-36
l2 somewhere	76
l2 spaced	55
l2 spec	42
l2 sphere	51
l2 splash	18
l2 spring's	-44
l2 stack	16
l2 stairs	-46
l2 standing	29
l2 starting	-45
l2 static	20
l2 static's	20
l2 sticks	48
l2 still	-33
l2 stirrups	75
l2 stock's	-27
l2 stone	-17
l2 stop	-17
l2 string	21
l2 stuck	26
l2 studs	42
l2 style	31
l2 sub	-27
l2 subfloor's	18
l2 summer	-26
l2 supply's	23
l2 switch	24
l2 table	-62
l2 take	-47
l2 tape	27
l2 tempered	15
l2 ten	-76
l2 terms	-44
l2 test	28
l2 tested	44
l2 that	39
l2 that's	-36
l2 the	-113
l2 them	29
l2 thermostat	-22
l2 thermostat's	50
l2 they're	-54
l2 thin	28
l2 thinned	43
l2 third	-15
l2 three	66
l2 through	-29
l2 throw	28
l2 throwing	-25
l2 throws	-43
l2 thursday	-31
l2 tide's	-47
l2 ties	31
l2 time	-23
l2 to	-38
l2 tomorrow	-80
l2 tracking	-17
l2 trap	28
l2 tread	15
l2 truck's	-15
l2 tubes	-34
l2 tuesday	-16
l2 turn	20
l2 twelve	49
l2 twice	-17
l2 two	-52
l2 type	-63
l2 u	-32
l2 under	-21
l2 unit	-21
l2 up	-38
l2 us	-31
l2 used	-20
l2 v	33
l2 vanity	47
l2 wait	31
l2 wall	45
l2 wall's	-48
l2 wants	-24
l2 was	-64
l2 washer	28
l2 water's	33
l2 ways	-32
l2 we	69
l2 we've	19
l2 wednesday	18
l2 wee	-37
l2 went	43
l2 were	15
l2 what's	-23
l2 white	28
l2 width	25
l2 will	29
l2 window	-60
l2 windows	20
l2 with	-30
l2 years	-50
l2 you	28
l2 zero	-64
l2. #	-17
l2. '	46
l2. (	38
l2. ,	19
l2. -ed	43
l2. -ly	-19
l2. -s	47
l2. /	34
l2. Name	-25
l2. letter	29
l2. n't	-91
l2. one	-44
l3 
	-46
l3 "	17
l3 (	24
l3 *	-30
l3 -	-20
l3 /	49
l3 1	-44
l3 1.2	16
l3 1.5	29
l3 10	-71
l3 12	33
l3 14	19
l3 16	-20
l3 1750	40
l3 212	18
l3 2214	-19
l3 24	18
l3 4	-17
l3 6120	-29
l3 7	-42
l3 8	22
l3 :	-21
l3 addition	-17
l3 all	-48
l3 also	-21
l3 am	-19
l3 amps	72
l3 an	48
l3 apart	36
l3 apiece	31
l3 are	20
l3 area	-16
l3 around	16
l3 as	15
l3 at	-84
l3 b	-29
l3 back	-37
l3 basement	-18
l3 bath	72
l3 batten	20
l3 bay	49
l3 be	-61
l3 beam's	-19
l3 bedroom	24
l3 best	-15
l3 between	-90
l3 big	18
l3 birdied	-25
l3 black	28
l3 blinks	-17
l3 blow	18
l3 board's	-22
l3 bolt	-30
l3 boss	-19
l3 bought	-20
l3 broncos	-16
l3 bronze	18
l3 building	24
l3 bump	17
l3 busted	-28
l3 but	-39
l3 by	36
l3 call	-25
l3 came	59
l3 can't	20
l3 cap	21
l3 cfm	27
l3 change	46
l3 channel	-54
l3 charger	47
l3 ckts	-21
l3 claim's	-30
l3 clean	-28
l3 cleaned	24
l3 cleanouts	18
l3 clear	35
l3 coat	-27
l3 code	-30
l3 colorbond	34
l3 come	-26
l3 coming	17
l3 corta	41
l3 cracked	30
l3 crane's	-31
l3 cut	39
l3 day	-19
l3 deep	-17
l3 den	31
l3 digits	-47
l3 dimmers	76
l3 donuts	-18
l3 door	-26
l3 double	20
l3 down	-28
l3 drip	-25
l3 dryer	18
l3 dumpsters	32
l3 each	75
l3 eighty	-45
l3 el	18
l3 em	-25
l3 end	-39
l3 ended	34
l3 exit	-23
l3 expires	-53
l3 f	45
l3 falls	-20
l3 fan	21
l3 feeding	19
l3 fifty	-21
l3 filter	17
l3 fine	28
l3 fire	-20
l3 first	76
l3 flashes	-45
l3 flat	-24
l3 flew	-15
l3 footing	21
l3 footing's	15
l3 for	16
l3 form	21
l3 forms	17
l3 four	-47
l3 fourteen	22
l3 frame	-31
l3 from	-32
l3 front	-33
l3 ft	34
l3 gal	-19
l3 gallons	-37
l3 gate	-47
l3 generator	27
l3 get	-64
l3 gets	41
l3 goal	-38
l3 going	-32
l3 gone	23
l3 grab	49
l3 gray	-27
l3 grout's	46
l3 half	31
l3 hallway	17
l3 hank	-22
l3 has	-24
l3 have	-20
l3 he	-58
l3 he's	-36
l3 heads	25
l3 her	-24
l3 here	15
l3 hes	-39
l3 him	-28
l3 hinges	-20
l3 his	-23
l3 hole	25
l3 holes	18
l3 holiday	-18
l3 hood	15
l3 hour	-31
l3 hours	-19
l3 i'd	35
l3 i'm	27
l3 if	55
l3 im	-44
l3 inches	-17
l3 inlet's	30
l3 inside	-31
l3 into	-25
l3 is	-30
l3 island	17
l3 items	-27
l3 its	-26
l3 jumper	-68
l3 k	22
l3 keep	62
l3 kicks	58
l3 kids	32
l3 knock	-27
l3 kpa	32
l3 laid	26
l3 last	-30
l3 laundry	-19
l3 left	-18
l3 leg	58
l3 lengths	52
l3 let	-30
l3 lid	-18
l3 lifted	34
l3 like	16
l3 list	-34
l3 load	-19
l3 loads	-18
l3 long	37
l3 look	-24
l3 loose	19
l3 lumber's	-35
l3 m	-32
l3 man	15
l3 marked	-64
l3 me	21
l3 meter	18
l3 missing	30
l3 miters	35
l3 mix	62
l3 mm	-20
l3 monday	-22
l3 move	30
l3 moved	-56
l3 movers	28
l3 my	-76
l3 nailed	23
l3 naw	18
l3 nd	34
l3 need	-17
l3 needs	17
l3 new	37
l3 next	-63
l3 nine	53
l3 no	17
l3 nobody	-52
l3 not	25
l3 nothing	28
l3 number	62
l3 of	15
l3 off	-32
l3 office	-34
l3 oh	34
l3 ohms	26
l3 ok	-25
l3 okay	-15
l3 old	40
l3 on	23
l3 opened	17
l3 ordered	19
l3 other	47
l3 ought	29
l3 outlets	-25
l3 owner	-25
l3 packers	-26
l3 plans	59
l3 plinth	26
l3 point	30
l3 press	-23
l3 pumped	48
l3 put	-61
l3 quit	-38
l3 quote	-29
l3 r	25
l3 rack	-43
l3 rafters	29
l3 ratio's	51
l3 reads	22
l3 register's	28
l3 relief	43
l3 rental	-23
l3 rev	36
l3 rip	34
l3 rise	31
l3 room	50
l3 row	-18
l3 run	19
l3 s	27
l3 safe	-21
l3 says	-21
l3 screw	17
l3 scuff	32
l3 see	-17
l3 service	18
l3 seventy	19
l3 she	-51
l3 shedding	-16
l3 short	-25
l3 shot	38
l3 should	24
l3 sign's	31
l3 since	-52
l3 site	-25
l3 slide	47
l3 smoko	-35
l3 so	15
l3 some	29
l3 somebody	26
l3 someone	-20
l3 spacing	17
l3 sqm	-15
l3 stair	-21
l3 stairs	35
l3 start	-41
l3 started	-59
l3 stat's	-23
l3 static	20
l3 steps	-36
l3 still	-38
l3 stub	25
l3 subcool	21
l3 superheat's	30
l3 swapped	-17
l3 switch	-32
l3 tape	-27
l3 tapon	-18
l3 team's	-37
l3 temp	45
l3 ten	-30
l3 test	-58
l3 that's	-17
l3 the	21
l3 there	46
l3 they	-50
l3 thick	39
l3 thin	-46
l3 thinks	-24
l3 thirteen	38
l3 thirty	-43
l3 three	-54
l3 thurs	-18
l3 thursday	27
l3 ticket	-26
l3 tie	33
l3 til	21
l3 tile	31
l3 tiles	-16
l3 times	-36
l3 tires	-43
l3 to	36
l3 toilet	19
l3 tomorrow	18
l3 too	31
l3 top	-16
l3 torque	68
l3 touch	22
l3 touched	27
l3 trim	27
l3 tripped	-17
l3 truck's	-21
l3 tune	-84
l3 twice	29
l3 u	-43
l3 under	18
l3 unit	48
l3 up	-27
l3 upsize	38
l3 used	15
l3 valve	24
l3 van	21
l3 vent	20
l3 vikings	-20
l3 voted	-21
l3 want	19
l3 way	-18
l3 wednesday	25
l3 well	24
l3 went	-17
l3 wet	22
l3 white	24
l3 windows	-27
l3 wire's	20
l3 with	28
l3 won't	17
l3 wood	-40
l3 x	33
l3 yard	-30
l3 yet	17
l3 you	-41
l3 zone	23
l3 zz	-31
l3. "	17
l3. (	24
l3. *	-30
l3. -	-20
l3. -ed	-31
l3. -ing	36
l3. :	-21
l3. letter	17
l3. n't	41
l3. unit	16
letter head 0	-82
long 10	-33
long 30	33
long 6	24
long undefined	-17
more figures 5	-25
more l. word	-51
more r 	-35
more r. #	-35
more r. word	-29
more words round	-36
names 0	-16
names 0 strange 0	35
names 0 strange 1	-74
names 0 strange 2	-114
names 1 strange 1	-33
names 1 strange 2	-17
names 2 strange 1	36
names 2 strange 2	33
names 3	23
of cars	22
of kin	-50
of media	-70
of money	-40
of past	-33
of phones	-39
of roads	-26
of school	-46
of services	15
of so many 0	40
of so many 1	-34
of so many 2	-28
of so many 3	-52
of sport	-26
one head 0	24
one head 1	-23
one head none	-118
r of body	-40
r of cars	27
r of clock	-59
r of food	-67
r of kin	-97
r of money	-163
r of roads	23
r of services	25
r1 )	-67
r1 ,	38
r1 -	-104
r1 .	26
r1 /	33
r1 12	24
r1 14	44
r1 2	51
r1 20	16
r1 3	-38
r1 4	19
r1 5	21
r1 50	-29
r1 555	-36
r1 7	-24
r1 :	-123
r1 ;	15
r1 @	47
r1 a	-41
r1 aa	17
r1 above	43
r1 across	26
r1 adds	-29
r1 adjustable	27
r1 advil	-19
r1 ae	21
r1 afternoon	16
r1 again	-53
r1 against	41
r1 air	-18
r1 alarm	-17
r1 all	-17
r1 along	23
r1 already	-48
r1 also	40
r1 am	-30
r1 an	-65
r1 anchors	26
r1 apart	74
r1 apiece	34
r1 arborvitae	17
r1 are	31
r1 area	-34
r1 as	-37
r1 ask	-18
r1 at	36
r1 b	-39
r1 baby	17
r1 back	27
r1 bad	26
r1 banksia	-22
r1 bars	-16
r1 baths	25
r1 batts	-82
r1 bays	-23
r1 bedroom	-43
r1 billed	-20
r1 birds	-27
r1 black	-46
r1 blade	-37
r1 blades	27
r1 blinds	44
r1 blocks	18
r1 blown	19
r1 board	45
r1 boards	80
r1 bracket	24
r1 brass	52
r1 brg	20
r1 brick	33
r1 bricks	-16
r1 bucks	-158
r1 building	-16
r1 burner	-51
r1 business	-18
r1 but	36
r1 by	62
r1 c	-28
r1 cabin	-20
r1 cabinet	17
r1 calls	-23
r1 came	25
r1 camry	-15
r1 can	-31
r1 cause	-19
r1 ceiling	-25
r1 cells	28
r1 cement	-19
r1 centers	27
r1 centres	16
r1 chance	-22
r1 clear	33
r1 closed	52
r1 closer	16
r1 closets	18
r1 code	-16
r1 coffee	-23
r1 come	-20
r1 coming	31
r1 common	47
r1 connections	-15
r1 corner	33
r1 corridor	-16
r1 counting	42
r1 covered	-17
r1 cr	20
r1 cracked	39
r1 creams	-18
r1 crew	-17
r1 crows	-32
r1 dash	-21
r1 dead	40
r1 deep	77
r1 den	32
r1 dentists	-45
r1 dia	23
r1 dimmers	25
r1 dollar	-76
r1 dollars	-49
r1 don't	54
r1 done	51
r1 dont	-19
r1 doors	16
r1 double	30
r1 down	20
r1 downs	27
r1 dry	24
r1 dutchmen	21
r1 dynamic	20
r1 each	86
r1 eighty	-17
r1 elbow	15
r1 elbows	15
r1 en	18
r1 ends	16
r1 euro	-100
r1 even	38
r1 every	-18
r1 exit	25
r1 extra	64
r1 extras	47
r1 faced	-17
r1 fall	40
r1 fifty	-56
r1 filter	15
r1 filters	-28
r1 fingers	-27
r1 fire	-16
r1 first	-27
r1 five	-70
r1 flat	29
r1 flowing	25
r1 forms	-18
r1 four	-37
r1 fourteen	-18
r1 gang	-112
r1 gasket	16
r1 gaskets	16
r1 get	-17
r1 gets	-43
r1 give	46
r1 go	-73
r1 goes	-21
r1 gone	-39
r1 good	22
r1 got	-38
r1 gray	-15
r1 grille	-42
r1 guys	-66
r1 had	-31
r1 half	25
r1 hall	35
r1 hand	-37
r1 handle	-65
r1 has	-90
r1 have	31
r1 he'll	-29
r1 head	24
r1 heads	70
r1 heavy	17
r1 helpers	-25
r1 here	89
r1 hi	34
r1 high	86
r1 hinges	35
r1 hit	-25
r1 hole	-98
r1 hooks	26
r1 hot	-18
r1 house	-19
r1 hundreds	-26
r1 i	36
r1 i'll	46
r1 if	20
r1 inside	39
r1 instead	31
r1 iron	-35
r1 is	-148
r1 ish	-21
r1 it	-34
r1 it'll	-33
r1 it's	-31
r1 juniper	-33
r1 just	71
r1 kay	20
r1 kids	-15
r1 kinds	-38
r1 larch	-22
r1 last	-23
r1 laundromats	-23
r1 layer	-72
r1 layers	24
r1 leaks	16
r1 left	74
r1 legs	-19
r1 lift	-31
r1 like	31
r1 limiter	32
r1 living	16
r1 location	51
r1 long	87
r1 longer	16
r1 loose	31
r1 love	-29
r1 lower	18
r1 man	-28
r1 maple	-49
r1 mas	19
r1 masons	-18
r1 max	45
r1 members	-18
r1 men	-30
r1 miles	23
r1 modules	23
r1 monday	-27
r1 more	113
r1 n	-20
r1 nail	30
r1 need	31
r1 needs	-75
r1 net	-44
r1 new	47
r1 next	-22
r1 niches	19
r1 nil	-22
r1 ninety	-62
r1 ninth	-25
r1 north	-21
r1 not	21
r1 nothing	-47
r1 now	-23
r1 o'clock	-124
r1 obscure	15
r1 oc	50
r1 oclock	-45
r1 off	41
r1 on	15
r1 outlets	34
r1 outside	24
r1 over	-21
r1 packers	-25
r1 panel	-132
r1 panhead	-26
r1 part	-60
r1 parts	56
r1 people	-19
r1 per	74
r1 phase	-42
r1 piers	24
r1 plate	25
r1 please	26
r1 plinth	16
r1 plus	-25
r1 pm	-34
r1 points	20
r1 pole	-36
r1 port	-31
r1 pressure	26
r1 problems	-22
r1 proud	26
r1 pulled	35
r1 put	-31
r1 quarter	-90
r1 quid	-57
r1 rail	19
r1 rattle	20
r1 reads	-30
r1 ready	-17
r1 receps	18
r1 refused	-27
r1 return's	25
r1 rh	18
r1 right	-25
r1 ring	19
r1 roof	-28
r1 rubber	28
r1 running	28
r1 runs	44
r1 sales	-22
r1 sash	-19
r1 sausages	16
r1 says	-65
r1 sconces	22
r1 screens	47
r1 screws	22
r1 sec	18
r1 second	-64
r1 sections	25
r1 seeds	-32
r1 seven	-26
r1 seventeen	-15
r1 shakes	-17
r1 sharp	-51
r1 shelf	-55
r1 shift	-40
r1 shims	21
r1 shingles	-17
r1 short	35
r1 shot	-18
r1 should	73
r1 shows	-27
r1 side	-34
r1 sides	-22
r1 silicone	-44
r1 since	-34
r1 sink	46
r1 six	-46
r1 slab	17
r1 slope	18
r1 smoke	19
r1 smokes	-24
r1 so	49
r1 soft	-19
r1 something	-40
r1 space	18
r1 spaces	39
r1 spare	65
r1 spares	20
r1 speed	-25
r1 speeds	-17
r1 split	-17
r1 spots	-29
r1 sprinkler	40
r1 square	-19
r1 stage	-30
r1 stars	-49
r1 step	-47
r1 steps	-46
r1 still	45
r1 stocks	48
r1 stops	-29
r1 strikes	-55
r1 studs	36
r1 sugars	-21
r1 sunday	-16
r1 sure	-25
r1 switch	30
r1 switches	22
r1 tall	15
r1 ten	24
r1 that	-36
r1 the	-32
r1 then	-41
r1 they	21
r1 they're	24
r1 thick	54
r1 thing	-31
r1 things	-26
r1 thirty	19
r1 this	-30
r1 three	28
r1 through	-37
r1 til	-16
r1 tile	21
r1 tiles	17
r1 till	-25
r1 time	-36
r1 times	-132
r1 tip	-28
r1 to	46
r1 today	-17
r1 together	-43
r1 toilet	31
r1 toilets	37
r1 tomorrow	-46
r1 took	16
r1 total	24
r1 toward	27
r1 towel	17
r1 treads	22
r1 tries	61
r1 triplex	-23
r1 tripped	-32
r1 tub	-18
r1 turns	18
r1 twelve	37
r1 two	-25
r1 under	16
r1 units	35
r1 unopened	30
r1 up	61
r1 usb	21
r1 valve	-21
r1 voicemails	-19
r1 voices	-31
r1 wafers	18
r1 walls	35
r1 wants	-34
r1 was	-95
r1 waste	26
r1 way	-101
r1 ways	-68
r1 we	17
r1 we're	-34
r1 wednesday	27
r1 were	29
r1 where	32
r1 white	22
r1 wide	103
r1 will	66
r1 window	-36
r1 windows	66
r1 wire	-20
r1 wood	-27
r1 work	55
r1 wrongs	-41
r1 x	63
r1 zerks	17
r1. 's	30
r1. )	-67
r1. ,	39
r1. -	-104
r1. -ing	27
r1. -ly	18
r1. .	26
r1. :	-123
r1. ;	15
r1. @	47
r1. Name	-58
r1. letter	44
r1. one	-139
r1. unit	26
r1. word	24
r2 "	24
r2 #	-16
r2 (	-24
r2 *	-29
r2 -	19
r2 /	26
r2 00	-15
r2 0142	-28
r2 1	-20
r2 100	35
r2 118	-16
r2 12	73
r2 16	16
r2 17	-37
r2 18	-16
r2 2	-42
r2 2.4	37
r2 20	-22
r2 21	-27
r2 22	25
r2 250	52
r2 28	24
r2 30	-16
r2 34	-23
r2 36	18
r2 38	-38
r2 4	27
r2 41	18
r2 430	-37
r2 450	16
r2 47	-20
r2 5	-19
r2 5027	-20
r2 6	26
r2 61	26
r2 7	-33
r2 72	15
r2 74	-19
r2 8	36
r2 :	-118
r2 a	-22
r2 about	-37
r2 acts	-35
r2 against	-18
r2 all	-15
r2 also	-42
r2 an	-29
r2 are	58
r2 arm	17
r2 arms	-22
r2 around	-25
r2 ask	30
r2 away	-19
r2 b	-27
r2 back	-39
r2 bag	-40
r2 ballasts	19
r2 base	-22
r2 bath	-21
r2 bay	-28
r2 be	64
r2 bedroom	-32
r2 before	-19
r2 bent	19
r2 big	-29
r2 board	44
r2 bought	33
r2 box	-78
r2 boxes	41
r2 brackets	-25
r2 bust	-23
r2 but	38
r2 buy	19
r2 buzz	23
r2 by	27
r2 c	-40
r2 call	-19
r2 calling	-43
r2 came	23
r2 can	25
r2 cant	-27
r2 cap	20
r2 caps	17
r2 caulk	31
r2 center	60
r2 change	-49
r2 circus	-21
r2 clear	42
r2 client	-28
r2 close	35
r2 closet	-22
r2 coat	26
r2 code	58
r2 concrete	-29
r2 cord	-20
r2 cover	-34
r2 cr	-22
r2 crack	-23
r2 cracked	114
r2 crown	-41
r2 day	-37
r2 days	-26
r2 dead	-18
r2 deny	-21
r2 did	30
r2 didn't	-17
r2 dining	-32
r2 dirt	18
r2 dlvd	48
r2 do	93
r2 don't	-35
r2 done	-28
r2 double	18
r2 down	-102
r2 drawing	19
r2 each	80
r2 easter	-33
r2 eight	-34
r2 eighteen	-34
r2 eighty	-53
r2 either	22
r2 elbow	-23
r2 eleven	-21
r2 else	-19
r2 em	94
r2 entry	-18
r2 epoxy	-41
r2 every	50
r2 everybody	-23
r2 everywhere	-32
r2 exit	-31
r2 faces	-31
r2 fan	-25
r2 far	52
r2 feet	-60
r2 fifty	-20
r2 fill	29
r2 filter	15
r2 fine	43
r2 five	-53
r2 floor	-24
r2 fogged	22
r2 foot	33
r2 footers	51
r2 for	33
r2 forward	-34
r2 four	-33
r2 fourteen	59
r2 framed	-41
r2 fridays	-27
r2 from	-22
r2 front	56
r2 ft	-19
r2 furnace	-34
r2 gal	-25
r2 get	-16
r2 give	-17
r2 glue	-29
r2 go	55
r2 goes	-26
r2 got	37
r2 grade	17
r2 ground	-26
r2 hair	33
r2 hang	51
r2 has	-25
r2 have	21
r2 hdrm	18
r2 he	-47
r2 head	43
r2 his	16
r2 holds	15
r2 hole	-17
r2 hot	67
r2 hour	-34
r2 house	35
r2 hr	-33
r2 i	24
r2 i'll	-16
r2 i've	29
r2 inch	60
r2 it	16
r2 just	-16
r2 la	17
r2 last	-20
r2 latch	19
r2 later	18
r2 laundry	-22
r2 legs	27
r2 less	19
r2 lever	25
r2 lift	-19
r2 light	16
r2 like	-18
r2 lime	18
r2 lite	-22
r2 litre	20
r2 ln	-22
r2 lol	-26
r2 loose	-21
r2 me	-19
r2 medium	-55
r2 midspan	17
r2 mirror	-19
r2 missing	40
r2 monday	-18
r2 more	-33
r2 never	-19
r2 night	-55
r2 nine	-24
r2 nineteen	-41
r2 ninety	15
r2 no	-39
r2 nobody	17
r2 nobody's	-28
r2 noon	-46
r2 now	-17
r2 nuts	21
r2 o	19
r2 of	-25
r2 oh	-24
r2 ok	20
r2 one	-38
r2 ones	57
r2 only	-23
r2 open	30
r2 opens	-21
r2 or	24
r2 ounce	25
r2 out	18
r2 outlet	-27
r2 over	34
r2 pad	-21
r2 panel	18
r2 past	-32
r2 patch	22
r2 pattern	-37
r2 pick	22
r2 plant	-23
r2 plaster	25
r2 plastic	-29
r2 play	-30
r2 point	-42
r2 pole	15
r2 pop	-22
r2 pops	28
r2 pound	38
r2 primer	43
r2 pull	17
r2 pump	16
r2 quarter	50
r2 r	17
r2 rail	-47
r2 raise	26
r2 range	-50
r2 ready	-30
r2 rest	44
r2 ring	35
r2 road	25
r2 rolls	17
r2 row	29
r2 rub	41
r2 run	-40
r2 s	-19
r2 sanded	-23
r2 saturday	-42
r2 saw	18
r2 sent	25
r2 set	-30
r2 seventeen	24
r2 she's	23
r2 sheet	-18
r2 shelf	17
r2 shimmed	34
r2 shocking	-28
r2 short	35
r2 should	-17
r2 shower	-30
r2 shut	-17
r2 side	16
r2 siding	34
r2 sign	20
r2 signed	-40
r2 sill	28
r2 since	17
r2 single	30
r2 site	51
r2 six	-48
r2 skip	-16
r2 skip's	-20
r2 slow	-17
r2 some	18
r2 somewhere	-15
r2 spraying	22
r2 spring	-19
r2 st	-22
r2 stage	-16
r2 start	-29
r2 started	-38
r2 starting	-36
r2 station	17
r2 sticks	-18
r2 still	-43
r2 stone	16
r2 stool	-38
r2 subfloor	20
r2 sunday	-38
r2 supposed	16
r2 swap	29
r2 tape	19
r2 tax	-22
r2 ten	38
r2 tens	27
r2 that's	21
r2 the	43
r2 them	25
r2 then	30
r2 there's	-29
r2 these	49
r2 thing	-78
r2 thirteen	17
r2 thirty	24
r2 this	42
r2 those	-25
r2 thousand	-22
r2 three	-36
r2 thursday	-41
r2 tighter	31
r2 til	-17
r2 tiles	-23
r2 time	-30
r2 times	48
r2 today	50
r2 told	20
r2 track	-31
r2 treinta	39
r2 trips	-16
r2 tuesday	-29
r2 twelve	35
r2 twenty	29
r2 two	-30
r2 up	-24
r2 upstairs	-19
r2 us	-109
r2 used	22
r2 valve	17
r2 wall	-16
r2 want	25
r2 way	61
r2 ways	25
r2 week	25
r2 weekend	28
r2 were	25
r2 what	50
r2 wires	17
r2 with	-29
r2 won't	34
r2 works	-30
r2 x	45
r2 you're	29
r2. "	24
r2. (	-24
r2. *	-29
r2. -	19
r2. :	-118
r2. Name	-67
r2. letter	16
r2. n't	-49
r2. one	-51
r2. unit	45
r3 %	45
r3 '	-26
r3 -	-20
r3 1	-21
r3 10	-21
r3 13	18
r3 14	-25
r3 24	19
r3 28	-26
r3 3	16
r3 4	-25
r3 6	-22
r3 7	34
r3 8	36
r3 9	-18
r3 90	19
r3 :	-53
r3 ;	-25
r3 a	-55
r3 about	16
r3 act	-31
r3 after	-23
r3 again	-30
r3 ain't	33
r3 air	26
r3 already	45
r3 an	-26
r3 anodes	30
r3 are	23
r3 as	-16
r3 ask	-20
r3 b	18
r3 back	-38
r3 bags	39
r3 bar	15
r3 base	-15
r3 bath	41
r3 bay	23
r3 bears	-23
r3 because	18
r3 bedding	28
r3 behind	27
r3 black	52
r3 blinds	-19
r3 blue	-27
r3 board	-60
r3 boards	45
r3 books	-34
r3 boots	-30
r3 both	26
r3 bottom	85
r3 brackets	-15
r3 braille	31
r3 break	-35
r3 broken	25
r3 bronze	34
r3 brought	35
r3 bucket	18
r3 but	15
r3 buzzer	-27
r3 cabinet	-17
r3 came	-35
r3 can	34
r3 can't	-27
r3 cant	-40
r3 carton	27
r3 case	24
r3 cash	-26
r3 cb	-24
r3 ceiling	-18
r3 centre	21
r3 change	-28
r3 changed	-23
r3 chimney	23
r3 chipped	42
r3 clips	26
r3 clock	-24
r3 close	-41
r3 closet	43
r3 color	-48
r3 corner	26
r3 count	63
r3 cover	30
r3 crack	-18
r3 cracked	-34
r3 crew	-71
r3 crown	-16
r3 damaged	25
r3 dash	39
r3 days	23
r3 de	22
r3 dead	22
r3 dining	-22
r3 discharge	-30
r3 door	41
r3 dot	-52
r3 double	-28
r3 drain	18
r3 drawer	-20
r3 draws	18
r3 driving	-33
r3 dryer	32
r3 dump	43
r3 dumpster	-16
r3 each	-40
r3 edge	44
r3 eggshell	16
r3 eighteen	18
r3 eleven	-25
r3 else	36
r3 em	-16
r3 ends	47
r3 enough	30
r3 exterior	-17
r3 falls	-31
r3 fan	-26
r3 far	18
r3 fault	-19
r3 feet	20
r3 field	60
r3 fifteen	15
r3 fifty	46
r3 finish	29
r3 fixed	-25
r3 flapper	-43
r3 flashing	50
r3 flat	25
r3 foam	16
r3 foot	26
r3 for	-29
r3 form	19
r3 friday	21
r3 front	22
r3 ft	16
r3 furnace	-31
r3 gang	36
r3 gauge	23
r3 gave	23
r3 get	-26
r3 go	36
r3 goes	29
r3 good	-22
r3 got	26
r3 gotta	24
r3 grab	-21
r3 grate	-20
r3 grille	-59
r3 ground	-24
r3 grout	28
r3 guys	-37
r3 half	-41
r3 hand	16
r3 hangers	24
r3 has	16
r3 haul	-47
r3 he	-52
r3 he's	-61
r3 head	-33
r3 heater	44
r3 heave	-21
r3 held	47
r3 her	47
r3 high	29
r3 hinge	18
r3 hinges	-28
r3 hot	-39
r3 hour	28
r3 hours	-19
r3 house	20
r3 how	-47
r3 hung	21
r3 i	-30
r3 i'll	-30
r3 idlers	55
r3 if	-28
r3 in	-41
r3 inch	-30
r3 it	43
r3 it's	26
r3 just	-18
r3 keep	15
r3 kept	-25
r3 key	-18
r3 kitchen	18
r3 kits	-20
r3 knocked	-26
r3 landing	49
r3 laser	46
r3 late	-26
r3 latest	-35
r3 leave	25
r3 leaves	17
r3 leg	53
r3 length	49
r3 lengths	18
r3 level	26
r3 lift	-48
r3 like	-55
r3 lock	30
r3 long	29
r3 loose	18
r3 lost	-15
r3 lot	-34
r3 low	22
r3 manifold	18
r3 manual	-30
r3 mate	-18
r3 measured	24
r3 menos	19
r3 middle	64
r3 min	-25
r3 minute	-35
r3 minutes	-31
r3 missing	-28
r3 molding	-39
r3 monday	-49
r3 month	25
r3 morning	-74
r3 mosaic	18
r3 my	16
r3 nail	-40
r3 need	26
r3 never	-17
r3 new	-29
r3 nine	16
r3 nineteen	22
r3 nose	46
r3 of	30
r3 off	-21
r3 oh	27
r3 old	-25
r3 on	-34
r3 ones	-35
r3 only	-42
r3 opened	17
r3 opener	-22
r3 order	21
r3 ordered	28
r3 orilla	18
r3 other	24
r3 ought	29
r3 out	19
r3 outlet	16
r3 packers	-24
r3 painted	40
r3 parts	17
r3 pass	-25
r3 pile	-19
r3 plan	48
r3 plate	27
r3 platform	-18
r3 platforms	16
r3 plenty	24
r3 plinth	-16
r3 plumbers	-23
r3 podium	-58
r3 point	50
r3 pool	-52
r3 porch	34
r3 port	-16
r3 pulled	-27
r3 put	34
r3 quarter	39
r3 radio	-61
r3 raining	-44
r3 ran	38
r3 range	-24
r3 reducers	24
r3 required	-20
r3 reset	-38
r3 rm	-20
r3 rod	-20
r3 row	-28
r3 run	40
r3 runs	-24
r3 safe	43
r3 safety	-42
r3 saints	-44
r3 sand	23
r3 says	-25
r3 see	-20
r3 send	-20
r3 service	-17
r3 serving	-24
r3 set	17
r3 sets	-16
r3 seven	-20
r3 seventy	31
r3 she	17
r3 sheet	30
r3 shelf	22
r3 short	46
r3 shot	-32
r3 sign	-22
r3 signal	-20
r3 sill	32
r3 sixteen	30
r3 sixty	38
r3 sloppy	30
r3 so	-27
r3 soft	41
r3 spring	-20
r3 square	-18
r3 stairs	19
r3 stay	-27
r3 steep	64
r3 steps	23
r3 straight	-23
r3 straps	-18
r3 street	-18
r3 stripped	27
r3 subs	-31
r3 sunday	-15
r3 swap	-28
r3 switch	30
r3 take	36
r3 tape	50
r3 tapos	-20
r3 tell	-30
r3 ten	-35
r3 than	-20
r3 thats	19
r3 them	-16
r3 thermometer	18
r3 thermostat	-42
r3 they	-23
r3 this	-17
r3 through	-35
r3 tied	51
r3 tile's	31
r3 timesheet	-29
r3 to	-15
r3 today	-27
r3 together	-33
r3 tomorrow	19
r3 towel	-17
r3 tread	-41
r3 trips	-16
r3 truck	-31
r3 tub	20
r3 tubes	35
r3 tubs	20
r3 twenty	17
r3 two	-43
r3 type	67
r3 uncles	-18
r3 underside	28
r3 up	-65
r3 used	25
r3 valve	-17
r3 van	30
r3 want	38
r3 waste	29
r3 water	-20
r3 way	44
r3 we	33
r3 week	-19
r3 were	21
r3 when	-16
r3 whole	-22
r3 wide	-25
r3 window	-16
r3 wire's	26
r3 won't	17
r3 x	21
r3 y	44
r3 year	-24
r3. %	45
r3. '	-26
r3. -	-20
r3. -ing	-50
r3. -ly	-19
r3. 1	36
r3. :	-53
r3. ;	-25
r3. Name	-17
r3. unit	33
rule 	-50
rule eachOf	88
rule pair	182
rule quantity/decimal	55
rule quantity/mixed	47
rule quantity/whole+taken-back	47
rule range	28
size 1	-41
size 60	18
size more	-70
strange 0	18
strange 1	-29
strange 3	-61
strange 4	-25
talk -1	-40
talk -2.5	-99
talk -5	-104
talk -9	-98
talk 0	-47
talk 1	-47
talk 14	50
talk 20	36
talk 9	56
talk each -1	-65
talk each -2.5	-126
talk each -5	-78
talk each 0	-38
talk each 1	-45
talk each 14	42
talk each 20	78
talk each 9	33
talk each less	-51
unit head 0	-49
unit head none	-24
unit percent	16
units 0	-51
units 1	63
units 2	35
word head 1	-23
word head 2	28
word head 3	37
£ head none	-70
`;
