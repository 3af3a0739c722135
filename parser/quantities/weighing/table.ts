/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
" head none	38
# head 1	68
$ head none	-92
's head 0	-47
's head none	123
( head none	22
+ head none	31
, head 0	29
, head none	38
- head 0	-20
- head 1	25
- head none	-69
-ed head none	55
-ing head 0	24
-ly head none	60
-s head 0	57
-s head 1	16
-s head none	43
/ head none	-95
0 l 	-16
0 l at	21
0 l. #	-16
0 l. word	17
0 r to	-21
0 r with	-22
0 r. -s	25
0 r. word	-36
0 words	26
0 words round	-21
1 figures 1	52
1 head 0	17
1 head none	-78
1 l +	18
1 l ,	72
1 l .	31
1 l and	84
1 l another	-87
1 l at	35
1 l bars	26
1 l bath	-35
1 l be	24
1 l big	-56
1 l birds	-16
1 l bottom	-36
1 l bought	60
1 l bring	43
1 l broke	33
1 l buy	52
1 l by	49
1 l crowned	27
1 l cut	-43
1 l each	-37
1 l every	-107
1 l falls	-22
1 l for	-19
1 l found	27
1 l get	82
1 l got	85
1 l grab	32
1 l had	33
1 l hall	51
1 l have	19
1 l her	36
1 l hinges	16
1 l hit	-25
1 l in	17
1 l inch	64
1 l is	-37
1 l just	87
1 l last	-70
1 l left	-29
1 l leg	-29
1 l long	-68
1 l longer	-18
1 l lost	55
1 l me	40
1 l mm	-36
1 l nd	-19
1 l need	39
1 l new	-86
1 l no	-26
1 l not	-25
1 l old	-73
1 l on	-21
1 l one	-33
1 l order	24
1 l other	-102
1 l over	-17
1 l plus	46
1 l put	86
1 l reading	24
1 l red	39
1 l right	-28
1 l second	-28
1 l shave	38
1 l side	27
1 l so	21
1 l square	-28
1 l static's	24
1 l take	-21
1 l that	-88
1 l that's	-19
1 l the	-141
1 l there's	33
1 l this	-27
1 l type	-24
1 l up	24
1 l want	54
1 l was	28
1 l. +	18
1 l. ,	72
1 l. -ing	-25
1 l. -s	-27
1 l. .	31
1 l. letter	-23
1 l. one	-32
1 l. word	-34
1 parts	19
1 r 	29
1 r 
	19
1 r .	-50
1 r 3	18
1 r at	-71
1 r belt	-21
1 r bracket	25
1 r by	19
1 r cracked	21
1 r door	15
1 r eight	15
1 r end	-52
1 r exit	21
1 r for	43
1 r hand	-34
1 r has	-22
1 r head	23
1 r here	57
1 r hit	-23
1 r i	-19
1 r it's	-19
1 r leg	-32
1 r location	46
1 r max	16
1 r missing	16
1 r new	47
1 r obscure	16
1 r of	-237
1 r off	45
1 r on	15
1 r one	-15
1 r out	-19
1 r panel	-51
1 r plinth	18
1 r podium	-17
1 r reads	-31
1 r reducer	15
1 r ring	41
1 r rod	-18
1 r seven	21
1 r shelf	-53
1 r short	-32
1 r shot	-15
1 r side	-27
1 r sink	50
1 r so	-27
1 r spare	46
1 r sprinkler	35
1 r stone	-16
1 r they	-15
1 r thing	-16
1 r three	15
1 r to	-66
1 r towel	17
1 r up	16
1 r was	-27
1 r wednesday	25
1 r. #	29
1 r. 's	-25
1 r. -ed	-23
1 r. -ing	28
1 r. -s	-62
1 r. .	-50
1 r. /	19
1 r. 1	78
1 r. one	46
1 r. word	-44
1 words	-70
12 figures 1	-27
12 l 	50
12 l 
	-32
12 l "	23
12 l :	40
12 l a	21
12 l about	22
12 l all	52
12 l and	20
12 l another	29
12 l apartment	-22
12 l are	25
12 l around	-30
12 l at	-112
12 l b	-22
12 l back	-31
12 l backfill	57
12 l bay	-25
12 l be	-17
12 l been	34
12 l before	-29
12 l between	-20
12 l bottom's	17
12 l bout	34
12 l breaker	-33
12 l brought	37
12 l building	-24
12 l but	42
12 l by	33
12 l can	30
12 l case	29
12 l cat	-21
12 l channel	-24
12 l circuit	-80
12 l code's	-16
12 l correction	16
12 l count	23
12 l cut	41
12 l door	-29
12 l double	-25
12 l drops	17
12 l e	-19
12 l embed	43
12 l end's	-31
12 l every	43
12 l exit	-25
12 l expires	-50
12 l exposure's	61
12 l fault	-22
12 l fell	46
12 l fit	19
12 l fla	18
12 l flat	-25
12 l floor	-56
12 l for	16
12 l four	-25
12 l front	-37
12 l garage	55
12 l get	25
12 l gone	-26
12 l got	82
12 l grab	18
12 l had	-27
12 l has	50
12 l have	17
12 l hit	-18
12 l hole	-63
12 l house	-50
12 l hung	42
12 l hwy	-19
12 l in	21
12 l is	28
12 l it	63
12 l it's	-91
12 l items	-17
12 l its	-15
12 l key	-35
12 l laborer	60
12 l lap	49
12 l last	16
12 l least	56
12 l leaves	51
12 l left	53
12 l like	-31
12 l line	-36
12 l lintel	17
12 l lost	-27
12 l lot	-54
12 l m	-18
12 l meant	21
12 l need	72
12 l needs	25
12 l nine	-19
12 l not	51
12 l note	-30
12 l number	-89
12 l number's	-28
12 l ocean's	-34
12 l of	28
12 l offered	-25
12 l on	-39
12 l only	16
12 l order	-15
12 l ought	-17
12 l out	23
12 l over	-27
12 l overhang's	21
12 l owns	-23
12 l past	-58
12 l plus	17
12 l port	-19
12 l poured	18
12 l pulling	23
12 l ran	51
12 l reading	-59
12 l reads	17
12 l replaced	24
12 l reveal's	18
12 l right	-27
12 l riser	-47
12 l rm	-24
12 l rtu	-16
12 l run	41
12 l said	-47
12 l saves	-17
12 l says	35
12 l set	-60
12 l sheet	-24
12 l six	23
12 l so	26
12 l solid	-26
12 l stack	18
12 l starter	24
12 l step	-22
12 l subcool	31
12 l superheat's	16
12 l take	30
12 l takes	28
12 l than	43
12 l the	54
12 l then	-21
12 l there's	26
12 l throat's	56
12 l through	-47
12 l til	-45
12 l to	15
12 l took	15
12 l tread	-23
12 l truck	-35
12 l under	-16
12 l unit	-87
12 l up	66
12 l us	45
12 l used	16
12 l wants	-28
12 l we're	54
12 l x	47
12 l zone	-27
12 l ×	31
12 l. "	23
12 l. #	50
12 l. 's	29
12 l. -ed	79
12 l. -ing	-31
12 l. -s	33
12 l. /	-32
12 l. :	40
12 l. Name	-35
12 l. one	-45
12 l. unit	-18
12 l. word	-18
12 parts	25
12 r )	-32
12 r ,	17
12 r -	-20
12 r .	36
12 r :	-38
12 r a	20
12 r adds	-24
12 r and	-26
12 r as	-26
12 r at	16
12 r b	-40
12 r baby	18
12 r blown	19
12 r boards	17
12 r brg	17
12 r bucks	-20
12 r by	57
12 r cells	31
12 r closed	50
12 r coming	28
12 r creams	-16
12 r crows	-33
12 r dash	-16
12 r dead	28
12 r deep	42
12 r den	33
12 r dentists	-43
12 r done	35
12 r door	-30
12 r doors	47
12 r down	26
12 r drops	23
12 r each	65
12 r eight	-22
12 r end	17
12 r fifty	-20
12 r five	-46
12 r for	41
12 r got	-30
12 r grille	-34
12 r has	-21
12 r heads	26
12 r here	40
12 r high	32
12 r hits	28
12 r hole	-40
12 r homeruns	26
12 r house	-23
12 r i	16
12 r in	-20
12 r instead	25
12 r iron	-29
12 r is	-37
12 r it	-17
12 r last	-28
12 r laundromats	-23
12 r left	54
12 r legs	-33
12 r like	36
12 r long	19
12 r love	-29
12 r maple	-31
12 r more	49
12 r needs	-58
12 r no	-31
12 r o'clock	-37
12 r of	50
12 r off	19
12 r on	34
12 r or	-16
12 r out	-87
12 r panel	-34
12 r rattle	24
12 r roof	-24
12 r rooms	16
12 r running	17
12 r seeds	-32
12 r sharp	-26
12 r shift	-39
12 r short	69
12 r should	25
12 r shows	-18
12 r six	-41
12 r so	20
12 r something	-39
12 r stops	-16
12 r studs	21
12 r the	23
12 r this	-23
12 r through	-17
12 r till	-23
12 r times	-16
12 r to	25
12 r toward	30
12 r tripped	-16
12 r two	-23
12 r valve	-19
12 r wants	-18
12 r was	-22
12 r when	-19
12 r wide	19
12 r wire	-24
12 r work	47
12 r x	17
12 r. )	-32
12 r. ,	17
12 r. -	-20
12 r. -ed	23
12 r. -s	20
12 r. .	36
12 r. :	-38
12 r. Name	-29
12 r. one	-102
12 r. unit	74
12 words	21
12 words round	-24
2 figures 1	-16
2 l 	29
2 l 
	-23
2 l (	22
2 l ,	26
2 l -	-23
2 l adds	37
2 l another	21
2 l around	-25
2 l at	-71
2 l back	24
2 l bath	-51
2 l bay	-56
2 l beam	33
2 l bed	-27
2 l bedroom	-68
2 l bought	19
2 l breaker	-16
2 l bring	44
2 l buy	30
2 l charging	-27
2 l cinco	26
2 l corta	36
2 l count	-41
2 l cover's	41
2 l day	-62
2 l dirt	21
2 l drawer	-45
2 l eyes	-35
2 l flashes	-27
2 l flat	-39
2 l forward	56
2 l fourteen	-28
2 l from	-27
2 l get	16
2 l gets	53
2 l grade's	20
2 l hall	27
2 l homeruns	18
2 l in	-22
2 l is	16
2 l it	24
2 l jumper	-29
2 l just	16
2 l kept	28
2 l landing	28
2 l last	71
2 l leg	-39
2 l low	18
2 l makes	-21
2 l maybe	65
2 l minus	45
2 l missing	15
2 l need	31
2 l number	-59
2 l of	-59
2 l only	-24
2 l order	22
2 l other	18
2 l out	-18
2 l paddock	-16
2 l panel	-50
2 l past	-27
2 l plan	-24
2 l quarter	41
2 l rack	-29
2 l ran	30
2 l replace	16
2 l sags	17
2 l see	34
2 l slope's	32
2 l so	18
2 l strike	-21
2 l swap	33
2 l takes	-54
2 l the	71
2 l then	-38
2 l there's	-67
2 l thing	-49
2 l took	26
2 l type	-26
2 l us	-21
2 l want	27
2 l wants	48
2 l was	40
2 l with	18
2 l zone	-45
2 l. #	29
2 l. 's	34
2 l. (	22
2 l. ,	26
2 l. -	-23
2 l. -ed	23
2 l. /	-23
2 l. 1	17
2 l. one	32
2 l. unit	-53
2 parts	43
2 r 	-20
2 r ,	-22
2 r -	-19
2 r 3	-18
2 r :	-33
2 r advil	-21
2 r after	-34
2 r against	21
2 r at	91
2 r bad	19
2 r bars	-19
2 r blinds	33
2 r broken	-17
2 r by	-22
2 r came	26
2 r can	-24
2 r cement	-21
2 r connections	-16
2 r decks	18
2 r don't	36
2 r done	18
2 r doors	35
2 r extras	50
2 r faced	-17
2 r fall	38
2 r fifty	22
2 r five	23
2 r forty	21
2 r gang	-75
2 r guys	-38
2 r had	-19
2 r hall	21
2 r helpers	-33
2 r high	19
2 r hinges	18
2 r homeruns	-30
2 r i	28
2 r if	33
2 r in	30
2 r is	-28
2 r kinds	-26
2 r ladders	17
2 r last	40
2 r lights	-29
2 r man	-26
2 r more	56
2 r new	26
2 r niches	20
2 r o'clock	-22
2 r of	95
2 r one	-46
2 r or	42
2 r out	48
2 r panel	-42
2 r part	-57
2 r proud	22
2 r pulled	32
2 r put	-17
2 r rafters	16
2 r set	-26
2 r shakes	-19
2 r shelf	-15
2 r sides	-28
2 r slope	19
2 r so	22
2 r speeds	-17
2 r spots	-23
2 r stage	-33
2 r stakes	16
2 r stars	-24
2 r steps	-38
2 r studs	28
2 r sugars	-17
2 r the	-35
2 r then	-29
2 r there	26
2 r thirty	19
2 r three	-31
2 r to	52
2 r together	-30
2 r under	23
2 r usb	21
2 r ways	-20
2 r were	40
2 r where	21
2 r window	-35
2 r windows	33
2 r wrongs	-37
2 r x	-29
2 r. #	-20
2 r. ,	-22
2 r. -	-19
2 r. 1	17
2 r. :	-33
2 r. n't	25
2 r. one	55
2 r. word	22
20 figures 2	17
20 l ,	32
20 l -	-27
20 l .	-25
20 l 3	-20
20 l a	76
20 l and	31
20 l at	40
20 l be	32
20 l bogeyed	-22
20 l by	26
20 l ch	-25
20 l ckts	-20
20 l code	-26
20 l cr	-16
20 l cut	19
20 l delta's	42
20 l dowels	20
20 l drew	-30
20 l error	-25
20 l every	58
20 l flat	46
20 l for	-42
20 l front	62
20 l gap's	-32
20 l go	27
20 l got	31
20 l head	18
20 l hearth's	35
20 l house	-32
20 l in	-56
20 l is	42
20 l it	16
20 l item	-17
20 l lad's	-22
20 l maybe	17
20 l me	-26
20 l need	23
20 l on	-21
20 l one	24
20 l packers	-22
20 l pier	-41
20 l plan	38
20 l pull	15
20 l pulling	17
20 l r	-74
20 l read	19
20 l reading	22
20 l said	25
20 l says	16
20 l seat's	-36
20 l set	44
20 l sheet	-15
20 l so	20
20 l span's	20
20 l sweet	-16
20 l tag	-27
20 l than	-35
20 l that's	-20
20 l the	-17
20 l then	50
20 l to	-47
20 l turning	-18
20 l under	29
20 l used	27
20 l wants	-24
20 l was	-31
20 l your	-48
20 l. ,	32
20 l. -	-27
20 l. -ing	31
20 l. .	-25
20 l. 1	-20
20 l. letter	-66
20 l. one	18
20 l. unit	51
20 l. word	25
20 parts	28
20 r 	22
20 r -	-31
20 r .	34
20 r after	54
20 r at	22
20 r banksia	-20
20 r boards	15
20 r bucks	-49
20 r by	28
20 r c	-36
20 r centers	18
20 r doors	16
20 r down	-80
20 r each	22
20 r even	21
20 r five	-40
20 r going	-31
20 r had	17
20 r heads	17
20 r hot	-26
20 r i	18
20 r more	16
20 r ninety	-61
20 r ninth	-22
20 r no	33
20 r oc	23
20 r of	30
20 r off	-44
20 r on	27
20 r one	59
20 r out	34
20 r outta	22
20 r second	-27
20 r since	-28
20 r smokes	-21
20 r so	27
20 r then	-29
20 r times	-18
20 r toilets	35
20 r twelve	-16
20 r twenty	-15
20 r two	-32
20 r wafers	22
20 r we	21
20 r with	21
20 r. #	22
20 r. -	-31
20 r. -s	50
20 r. .	34
20 r. letter	19
20 r. one	-114
20 r. word	36
20 words round	-26
5 l 	36
5 l 
	-42
5 l ,	34
5 l :	20
5 l a	-32
5 l about	-34
5 l add	22
5 l after	-37
5 l all	18
5 l and	-31
5 l another	27
5 l apt	-30
5 l at	-60
5 l b	-17
5 l back	27
5 l bay	-33
5 l be	34
5 l bed	-23
5 l bldg	-36
5 l boring	-26
5 l bring	25
5 l brought	45
5 l by	-49
5 l class	-23
5 l code	-44
5 l cover's	16
5 l cut	16
5 l day	-51
5 l den	15
5 l dock	-19
5 l done	26
5 l door	-34
5 l down	41
5 l edge	15
5 l elevator	-20
5 l feeder	-20
5 l finished	-22
5 l five	-19
5 l flashes	-46
5 l flat	-33
5 l foot	24
5 l for	50
5 l found	18
5 l front	26
5 l full	29
5 l g	-18
5 l get	49
5 l gimme	85
5 l got	18
5 l has	30
5 l have	30
5 l he's	-16
5 l hole's	27
5 l hour's	-52
5 l house	-19
5 l hub	24
5 l is	27
5 l it	68
5 l its	-35
5 l kept	16
5 l kitchen	27
5 l knock	27
5 l ladder	-20
5 l leaves	36
5 l left	39
5 l level	-43
5 l line	-51
5 l loop	-42
5 l lp	-34
5 l lvl	-36
5 l make	18
5 l man's	-36
5 l me	17
5 l mode	-41
5 l necesito	38
5 l need	24
5 l no	-16
5 l not	51
5 l note	-25
5 l nozzle	-35
5 l number	-74
5 l of	-41
5 l on	53
5 l one	-16
5 l only	70
5 l or	16
5 l other	64
5 l out	49
5 l over	95
5 l p	-34
5 l pan's	17
5 l part	-31
5 l profile's	25
5 l pulled	19
5 l pump	-20
5 l ratio's	47
5 l rolled	-38
5 l room	-48
5 l said	33
5 l says	18
5 l scaff	31
5 l set	21
5 l setting	-18
5 l sheet	-16
5 l shelf	-41
5 l short	67
5 l shot	-22
5 l sister	29
5 l slide	-45
5 l so	16
5 l still	49
5 l strike	-24
5 l switch	-38
5 l take	20
5 l that	22
5 l the	-38
5 l then	-25
5 l there	-18
5 l throw	21
5 l till	-26
5 l took	26
5 l two	-17
5 l type	-26
5 l unit	-39
5 l us	41
5 l use	21
5 l used	18
5 l wants	33
5 l was	57
5 l zone	-68
5 l. #	30
5 l. ,	34
5 l. -ing	-19
5 l. -s	76
5 l. /	-51
5 l. :	20
5 l. Name	-45
5 l. letter	-23
5 l. one	-70
5 l. unit	-70
5 r )	-43
5 r -	-36
5 r 2	27
5 r 3	-34
5 r 7	-28
5 r :	-24
5 r a	-20
5 r against	16
5 r and	28
5 r apart	66
5 r apiece	31
5 r at	26
5 r back	41
5 r baths	24
5 r batts	-61
5 r bays	-31
5 r be	21
5 r blade	-58
5 r bricks	-16
5 r broken	20
5 r burner	-53
5 r but	35
5 r by	-31
5 r calls	-16
5 r came	-20
5 r closets	19
5 r corner	22
5 r corridor	-19
5 r crew	-16
5 r d	-16
5 r dimmers	23
5 r doors	-50
5 r dutchmen	25
5 r extra	50
5 r for	24
5 r four	-50
5 r gets	-19
5 r gone	-35
5 r guys	-18
5 r had	-17
5 r hall	15
5 r has	-20
5 r heads	25
5 r high	49
5 r hole	-26
5 r hooks	28
5 r in	64
5 r is	-66
5 r ish	-18
5 r just	59
5 r layers	20
5 r left	54
5 r lift	-28
5 r living	17
5 r loose	24
5 r more	53
5 r need	16
5 r not	-19
5 r number	28
5 r o'clock	-50
5 r oclock	-15
5 r of	104
5 r off	27
5 r outlets	15
5 r over	20
5 r parts	52
5 r per	57
5 r ready	-19
5 r receps	17
5 r refused	-26
5 r ring	-27
5 r screens	45
5 r shingles	-23
5 r should	22
5 r spaces	30
5 r square	-43
5 r stars	-18
5 r still	66
5 r straps	16
5 r strikes	-38
5 r ten	25
5 r the	-80
5 r then	-32
5 r they	34
5 r thick	23
5 r things	-15
5 r times	-66
5 r to	16
5 r today	-31
5 r tomorrow	-42
5 r tries	58
5 r tripped	-23
5 r two	16
5 r under	-22
5 r walls	16
5 r way	-61
5 r went	27
5 r where	17
5 r will	50
5 r windows	15
5 r wire	-73
5 r with	-49
5 r x	29
5 r. 's	-16
5 r. )	-43
5 r. -	-36
5 r. -ing	23
5 r. -s	40
5 r. 1	-16
5 r. :	-24
5 r. n't	-27
5 r. one	-36
60 figures 2	20
60 l 	-22
60 l $	-32
60 l -	-55
60 l a	40
60 l about	-24
60 l around	53
60 l at	64
60 l be	19
60 l bin	-38
60 l breaker	-24
60 l bus	-22
60 l cold's	36
60 l cover	17
60 l do	-20
60 l door	25
60 l dynamic	21
60 l error	-23
60 l every	55
60 l had	-45
60 l he's	-89
60 l height's	19
60 l house	72
60 l im	-25
60 l in	-33
60 l is	55
60 l it	-32
60 l left	-32
60 l limit's	-31
60 l lot	-21
60 l lts	16
60 l measure	-34
60 l meter's	15
60 l need	20
60 l net	-39
60 l new	-16
60 l not	42
60 l number	-59
60 l of	18
60 l off	-18
60 l on	-16
60 l ones	39
60 l out	24
60 l plate	27
60 l po	-16
60 l r	-24
60 l reading	23
60 l rule	-26
60 l say	26
60 l says	26
60 l sch	-49
60 l serving	-15
60 l set	42
60 l sixty	-16
60 l slip	-17
60 l studio	-23
60 l talks	-35
60 l that's	15
60 l through	33
60 l to	27
60 l top	-24
60 l turned	-18
60 l up	-55
60 l vanity	22
60 l vikings	-22
60 l with	42
60 l x	31
60 l. #	-22
60 l. $	-32
60 l. 's	37
60 l. -	-55
60 l. -ing	38
60 l. one	-26
60 l. unit	56
60 l. word	33
60 r .	38
60 r 2	18
60 r 50	-26
60 r :	-22
60 r a	26
60 r across	23
60 r again	-15
60 r all	24
60 r an	-38
60 r at	38
60 r baffles	15
60 r batts	-22
60 r blades	31
60 r boards	15
60 r both	28
60 r bucks	-38
60 r down	75
60 r emer	16
60 r fifty	-47
60 r flat	17
60 r for	-31
60 r forty	-33
60 r front	43
60 r going	-61
60 r high	24
60 r is	-52
60 r just	15
60 r modules	22
60 r no	-26
60 r nothing	-26
60 r now	-22
60 r oc	26
60 r of	30
60 r off	-26
60 r on	-70
60 r or	-27
60 r packers	-22
60 r pavers	15
60 r right	-25
60 r second	-40
60 r seven	-20
60 r should	29
60 r so	40
60 r space	17
60 r square	31
60 r that	16
60 r the	-18
60 r then	37
60 r there	-31
60 r thick	16
60 r three	35
60 r voices	-26
60 r wide	26
60 r x	27
60 r. -s	-21
60 r. .	38
60 r. /	19
60 r. :	-22
60 r. letter	31
60 r. one	-89
60 r. word	48
60 words	26
99 figures 2	24
99 l 	-22
99 l $	-33
99 l -	23
99 l a	-20
99 l about	19
99 l an	-57
99 l are	-25
99 l at	48
99 l by	20
99 l for	-16
99 l got	-27
99 l headroom's	25
99 l height	40
99 l him	24
99 l humidity's	30
99 l it	-18
99 l job	-27
99 l not	-35
99 l of	-31
99 l only	17
99 l over	-24
99 l past	49
99 l psalm	-25
99 l roughly	32
99 l says	-33
99 l she's	-48
99 l sixteen	-17
99 l square	-16
99 l static	46
99 l temp	20
99 l that	-36
99 l the	-18
99 l to	40
99 l under	54
99 l was	27
99 l we're	-19
99 l with	-21
99 l. #	-22
99 l. $	-33
99 l. 's	23
99 l. -	23
99 l. -ing	29
99 l. -ly	45
99 l. -s	-26
99 l. one	-61
99 l. unit	-31
99 l. word	26
99 parts	-18
99 r ,	40
99 r -	23
99 r a	-29
99 r an	-17
99 r and	-33
99 r bucks	-37
99 r dynamic	24
99 r flowing	25
99 r is	-26
99 r lower	17
99 r next	-24
99 r out	45
99 r panhead	-29
99 r problems	-21
99 r rough	24
99 r so	35
99 r the	-15
99 r we're	-47
99 r. ,	40
99 r. -	23
99 r. -ing	25
99 r. -s	-30
99 r. one	-16
99 r. unit	-23
999 0figures 4	-49
999 l 	-16
999 l $	-24
999 l ,	-21
999 l a	-17
999 l about	48
999 l amp	29
999 l and	72
999 l at	28
999 l count's	16
999 l drawing	-18
999 l every	24
999 l exit	-16
999 l extension's	-36
999 l for	25
999 l from	25
999 l go	-29
999 l going	45
999 l good	-19
999 l had	-21
999 l in	-46
999 l interpass	23
999 l invert's	37
999 l it	-27
999 l kid's	-26
999 l knocked	-24
999 l laid	31
999 l leg	49
999 l limit's	55
999 l neutral's	24
999 l no	43
999 l nobody's	-50
999 l number's	-62
999 l one	-27
999 l out	47
999 l panel's	16
999 l pressure's	-41
999 l put	-40
999 l reading	29
999 l reads	29
999 l recirc	48
999 l rise	57
999 l riser	31
999 l rm	-41
999 l room	-47
999 l section	-27
999 l set	18
999 l shows	20
999 l since	-23
999 l spacing	22
999 l suction's	17
999 l suite	-32
999 l the	-86
999 l there	-34
999 l there's	15
999 l those	20
999 l to	30
999 l two	33
999 l two's	29
999 l voltage	70
999 l volts	29
999 l wall's	19
999 l wants	19
999 l was	-48
999 l. #	-17
999 l. $	-24
999 l. 's	31
999 l. ,	-21
999 l. -ed	-25
999 l. -ing	42
999 l. -s	69
999 l. 1	-25
999 l. unit	-31
999 oh	-42
999 parts	24
999 r ,	26
999 r -	-35
999 r .	25
999 r 555	-17
999 r a	-42
999 r above	28
999 r already	-35
999 r and	23
999 r area	-34
999 r base	37
999 r before	-17
999 r block	-24
999 r bucks	-28
999 r by	19
999 r centres	21
999 r common	37
999 r deep	15
999 r double	-27
999 r down	32
999 r end	19
999 r every	-31
999 r fives	-16
999 r for	-47
999 r give	42
999 r going	70
999 r he'll	-24
999 r head's	17
999 r high	32
999 r hinge	-19
999 r i	32
999 r limiter	41
999 r max	25
999 r more	16
999 r net	-45
999 r not	34
999 r number	-22
999 r of	69
999 r off	16
999 r one	17
999 r over	-52
999 r return's	24
999 r so	-38
999 r sure	-16
999 r the	30
999 r to	33
999 r today	26
999 r two	-15
999 r. 's	44
999 r. ,	26
999 r. -	-35
999 r. -s	-17
999 r. .	25
999 r. 1	-43
999 r. Name	-24
999 r. letter	51
999 r. unit	-34
999 r. word	25
999 words	37
999 words round	45
9999 figures 4	-66
9999 figures 5	-21
9999 l 	-24
9999 l ,	-32
9999 l asking	-19
9999 l at	102
9999 l bath's	20
9999 l by	-18
9999 l ceiling's	19
9999 l deductible's	-32
9999 l for	-21
9999 l from	-32
9999 l had	52
9999 l hundred	-23
9999 l in	-15
9999 l is	-44
9999 l job's	-25
9999 l lintel's	29
9999 l the	-21
9999 l to	19
9999 l want	-34
9999 l was	47
9999 l x	36
9999 l. #	-24
9999 l. 's	24
9999 l. ,	-32
9999 l. -ing	-21
9999 l. letter	36
9999 l. one	-23
9999 l. word	-15
9999 r already	-18
9999 r in	-32
9999 r it'll	-33
9999 r long	32
9999 r maple	-24
9999 r off	19
9999 r on	26
9999 r side	-16
9999 r the	15
9999 r to	39
9999 r today	-15
9999 r. unit	-37
9999 r. word	-21
9999 words	-18
9999 words round	41
: head 0	30
: head none	33
@ head none	19
Name head none	-92
a a	-44
a aa	18
a about	-53
a above	26
a across	27
a act	-31
a acts	-28
a adds	-28
a adjustable	21
a advil	-21
a after	-18
a again	-52
a against	36
a ain't	23
a alarm	-20
a alder	-20
a all	-65
a along	20
a already	-21
a also	33
a am	-17
a amp	-18
a an	-88
a anchors	22
a and	46
a anodes	33
a another	-33
a anything	31
a apart	76
a apiece	31
a are	31
a area	-19
a argue	-20
a arms	-19
a around	-16
a as	-46
a ask	-37
a at	19
a away	-30
a b	-41
a back	39
a backs	-17
a bad	23
a baffles	15
a bag	16
a bales	-63
a ballasts	28
a balusters	-25
a banksia	-29
a base	42
a bases	-17
a basket	-42
a bath	47
a bathroom	-43
a baths	30
a batts	-67
a be	49
a bears	-18
a bedroom	-23
a before	-18
a behind	29
a below	16
a bends	21
a bent	20
a between	-24
a bifolds	24
a big	15
a birch	-39
a bit	16
a black	53
a blade	-21
a blades	32
a blank	17
a blanks	23
a blew	-36
a blinds	20
a blocks	63
a blown	-20
a blue	-58
a boards	77
a bolt	21
a bolts	16
a bone	-17
a books	-30
a boot	-22
a boots	-29
a both	36
a bottom	53
a bought	52
a bracket	17
a braille	30
a brass	55
a break	-17
a brg	17
a bridge	-61
a bring	26
a broken	29
a bronze	33
a brought	25
a brown	16
a bucket	16
a bucks	-69
a built	-34
a bulbs	15
a burned	28
a burner	-53
a bushing	23
a business	-26
a bust	-23
a but	74
a buzz	23
a buzzer	-26
a buzzes	-15
a by	35
a bye	-27
a c	-40
a cable	-55
a call	-38
a calling	-29
a came	30
a can	51
a can't	-28
a cans	33
a cant	-50
a caps	17
a carry	-43
a case	30
a cash	-26
a casing	23
a caulk	25
a cb	-25
a ceiling	26
a cells	31
a center	55
a centers	51
a centimeter	23
a centre	26
a centres	24
a chance	-16
a change	-36
a check	41
a chimney	24
a chipped	51
a chippy	-48
a circuit	18
a circus	-28
a city	-18
a clamps	24
a clear	87
a client	-27
a clips	55
a clock	-25
a closed	45
a closet	35
a cm	-18
a coats	-17
a code	43
a color	-40
a come	-19
a comes	-25
a coming	57
a common	28
a complete	-35
a concrete	-42
a connections	-16
a contact	16
a cord	-20
a corner	49
a corners	16
a could	-22
a count	58
a country	-42
a cove	17
a crack	-37
a cracked	86
a creams	-16
a crew	-91
a crows	-33
a damaged	37
a dash	19
a day	-82
a days	-41
a de	66
a dead	27
a deck	-19
a decks	49
a deep	81
a degree	24
a degrees	-19
a dehu	25
a den	16
a dentists	-94
a deny	-25
a desk	33
a dimmers	16
a dirt	17
a discharge	-28
a disposal	-48
a do	24
a doce	66
a dock	-27
a dollar	-49
a dollars	-21
a don't	-27
a done	-20
a dos	40
a dot	-48
a down	-49
a dozen	-71
a drawer	-31
a drawing	21
a drew	-38
a drip	30
a driveway	-16
a driving	-29
a drop	25
a drops	21
a dryer	-25
a dump	52
a dumpster	-21
a dutchmen	25
a dynamic	24
a each	95
a easter	-28
a edge	50
a eggshell	34
a eights	19
a either	-44
a elbows	35
a eleven	-20
a eleventh	-48
a elm	-30
a elsewhere	20
a em	63
a emer	26
a ends	48
a enough	17
a euro	-86
a even	59
a every	64
a everybody	-38
a everything	-15
a everywhere	-28
a except	32
a extra	44
a extras	50
a faced	-16
a faces	-27
a factory	18
a fair	-21
a fall	32
a falls	-30
a fan	-19
a far	80
a faucet	-19
a fault	-34
a feed	-29
a feet	-29
a few	24
a field	51
a fill	32
a filter	27
a find	-37
a fine	34
a fingers	-27
a fire	-16
a firebrick	39
a fit	45
a fix	-66
a fixed	-29
a flapper	-61
a flashing	35
a flat	45
a flex	-32
a flicker	35
a flow's	18
a flowing	36
a foam	-45
a fogged	29
a foot	60
a footers	42
a for	23
a form	29
a forty	-32
a forward	-38
a four	-30
a fourteen	59
a framed	-50
a fridays	-25
a front	40
a frost	-24
a ft	-34
a full	17
a furnace	-49
a g	26
a gal	-22
a gallon	-25
a game	-37
a gang	-59
a garage	15
a gary	20
a gasket	18
a gate	-45
a gauge	26
a get	-30
a gets	-26
a give	66
a glass	40
a glue	-32
a glued	-22
a go	62
a goat	-25
a goes	-21
a gone	-52
a gonna	20
a good	59
a grab	-15
a grade	34
a grate	-41
a grease	-18
a grille	-91
a grit	23
a ground	-32
a grout	48
a gun	-25
a guy	-29
a guys	-73
a had	-22
a haggles	-23
a hair	32
a hall	94
a hand	-19
a handle	-62
a hang	31
a hangers	68
a hardware	16
a has	-92
a hauf	-18
a haul	-70
a have	29
a he	-77
a he's	-92
a head	-70
a head's	17
a heads	77
a heater	30
a heave	-24
a height	25
a helpers	-33
a her	16
a here	24
a high	118
a him	-62
a hinges	-31
a hire	-25
a hit	-30
a holds	15
a hole	-64
a hooks	19
a hot	21
a hours	-30
a house	18
a how	-18
a hr	-64
a hums	-58
a hundred	32
a hundreds	-24
a hung	-20
a hydro	-34
a i	-45
a i've	22
a id	-22
a idlers	57
a if	-24
a in	16
a inch	19
a inches	19
a inside	-24
a instead	32
a iron	-41
a is	-38
a ish	-22
a island	-16
a it	-35
a it'll	-33
a it's	-75
a joint	22
a juniper	-25
a just	29
a keep	22
a key	-45
a kg	-15
a kid	-21
a kinds	-38
a kit	27
a kitchen	17
a knocked	-24
a l	27
a labeled	25
a lace	15
a ladder	-40
a ladders	17
a lady	18
a laid	23
a lamp	23
a landing	48
a larch	-19
a laser	50
a last	25
a late	-40
a later	21
a latest	-32
a laundromats	-23
a lavs	15
a lawsuit	-29
a lay	31
a layer	-74
a layers	20
a layout	24
a leave	22
a left	46
a leg	55
a legs	42
a length	36
a let	-17
a lid	21
a lift	-66
a light	26
a lights	-21
a like	-58
a lime	46
a limiter	41
a linear	20
a litre	27
a live	17
a living	26
a load	-16
a loaded	-27
a location	46
a lol	-63
a long	116
a longer	19
a look	-37
a lot	-49
a louvres	20
a love	-29
a lower	23
a lunch	-32
a mailbox	-32
a main	-23
a make	-39
a man	-40
a manifold	17
a manual	-31
a maple	-50
a masons	-16
a match	24
a mate	-33
a matt	26
a max	66
a me	-23
a medium	-51
a meter	31
a metres	21
a middle	54
a midspan	17
a mill	-17
a minimum	25
a minute	-37
a minutes	-34
a mm	19
a modules	22
a molding	-36
a monday	-24
a month	27
a more	87
a morning	-64
a mosaic	-18
a move	22
a moved	-65
a moves	-23
a muppet	-17
a n	104
a nails	27
a nap	17
a need	27
a needs	-67
a net	-45
a never	-34
a new	-25
a next	-32
a niches	20
a night	-65
a nine	-37
a ninth	-27
a no	-31
a nobody's	-21
a noon	-43
a north	26
a nos	23
a nose	46
a nosing	-15
a not	-39
a nothing	-33
a nozzle	25
a nuts	-45
a o'clock	-86
a obscure	16
a oc	49
a oclock	-26
a of	30
a off	16
a office	-44
a offset	-22
a oh	-18
a ok	-21
a old	47
a one	-20
a ones	18
a open	25
a opener	-22
a opening	53
a opens	-27
a order	52
a ordered	30
a ought	36
a ounce	25
a out	-36
a outlets	34
a outside	-17
a over	31
a packers	-58
a paint	18
a painted	28
a painters	-20
a pan	24
a panel	-80
a panels	23
a panhead	-29
a park	-19
a part	-57
a parts	70
a pascals	15
a pass	-25
a past	-84
a pattern	-72
a pavers	19
a people	-16
a per	60
a picked	19
a piers	24
a pies	63
a pine	38
a plan	43
a plate	41
a plates	39
a platform	-18
a platforms	58
a play	-33
a please	25
a plenty	55
a plinth	26
a plug	-28
a plumber	-17
a plumbers	-26
a plus	-20
a plywood	27
a pm	-30
a pocket	31
a podium	-71
a point	-19
a pole	-19
a pool	-50
a pop	-21
a pops	19
a porch	15
a power	-23
a pressure	23
a primer	33
a problems	-21
a proud	16
a pull	16
a punch	-19
a put	-30
a quart	26
a quid	-26
a quiet	-18
a quit	-33
a rack	21
a radiator	19
a radio	-103
a rafters	16
a raining	-40
a raise	46
a ran	35
a rang	-25
a range	-77
a rattle	24
a read	19
a ready	-48
a rear	-18
a receps	16
a receptacle	19
a receptacles	22
a recirc	35
a reducer	28
a reducers	34
a refused	-26
a remain	19
a replaced	-18
a required	-28
a reset	-31
a rest	21
a return's	32
a rhythm	-63
a right	-30
a ring	46
a rise	16
a road	28
a roof	-30
a room	23
a rooms	16
a ropings	-25
a rub	42
a rubber	22
a run	23
a running	43
a runs	-22
a safe	38
a safety	-45
a said	-55
a saints	-44
a same	-17
a sand	28
a satin	17
a saying	-19
a says	-31
a scale	-15
a screen	26
a screens	39
a screwed	17
a screws	19
a sealed	26
a second	-23
a seeds	-32
a serving	-18
a set	-19
a seventh	-16
a seventy	23
a shakes	-16
a sharp	-38
a she	30
a she's	-19
a shed	29
a sheet	20
a sheets	24
a shelves	-24
a shift	-41
a shimmed	34
a shims	27
a shingles	-19
a short	90
a should	62
a shower	-38
a shows	-23
a shut	-23
a shy	-15
a side	34
a sides	-16
a siding	32
a signal	-19
a signed	-50
a silicone	-36
a sill	29
a sills	18
a since	-18
a sink	30
a sixes	-19
a sixteen	105
a sixteenths	-15
a sixty	-25
a skip	-23
a slats	-26
a slope	55
a slow	-47
a smokes	-21
a so	48
a sockets	-24
a some	31
a something	-26
a sorry	-29
a space	20
a spacer	-25
a spaces	30
a spare	35
a spares	33
a speeds	-17
a spots	-30
a spout	17
a spraying	25
a spring	-41
a sprinkler	21
a square	-35
a st	-32
a stage	-33
a stair	-18
a stakes	16
a stars	-43
a started	-34
a starting	-22
a stay	-36
a steep	46
a step	-40
a steps	-16
a still	-40
a stock	25
a stone	-21
a stool	-43
a stops	-17
a straight	-27
a straps	18
a strikes	-52
a strings	36
a stud	18
a studs	85
a subcool	34
a submittal	16
a sugars	-26
a summer	-16
a sunday	-55
a superheat's	20
a supplier	-18
a supply	43
a sure	-17
a swapped	-35
a sweep	21
a switch	50
a tag	-19
a take	44
a tall	35
a tap	29
a tape	38
a taped	22
a tempered	25
a template	-16
a tens	19
a that	-38
a their	-18
a then	-31
a theres	20
a these	52
a they	-24
a they're	35
a they've	16
a thick	39
a thing	-98
a things	-24
a thirteen	25
a this	-55
a those	-21
a thousand	-30
a through	-24
a throughout	19
a thursday	-27
a tied	40
a ties	-18
a tighter	33
a tile	19
a tile's	44
a tiles	21
a time	-23
a times	-94
a timesheet	-25
a tip	-21
a to	38
a toe	-28
a together	-69
a toilet	29
a toilets	36
a tonight	18
a too	-46
a took	-26
a top	16
a torn	-24
a torqued	-17
a total	39
a touch	-17
a towel	23
a travelers	-24
a tread	-40
a treinta	36
a tries	54
a tripped	-37
a trips	-17
a truck	22
a tub	17
a tube	40
a tubs	27
a tuesday	-40
a tune	-15
a turned	-32
a turns	17
a two	24
a twos	23
a type	92
a u	-24
a uncles	-16
a under	-21
a underside	19
a unit	-24
a until	33
a up	19
a us	-71
a usb	22
a use	18
a used	50
a v	-37
a vanity	-28
a vent	18
a vents	-16
a vinyl	16
a voices	-26
a wafers	22
a walk	-18
a wall	45
a walls	35
a want	45
a was	-29
a washer	-21
a waste	43
a water	-55
a watt	35
a wax	-29
a way	-33
a ways	-16
a we	22
a wednesday	28
a weekend	49
a were	22
a what	24
a whatever	-37
a where	42
a which	33
a while	30
a white	25
a who	-17
a wi	-18
a wide	15
a will	53
a wind	-22
a window	-54
a windows	33
a wiped	-28
a wire	-74
a wire's	25
a wires	20
a wood	-27
a work	39
a works	-25
a would	-25
a wouldn't	-124
a wrongs	-37
a x	66
a y	40
a yard	-91
a year	-35
a yesterday	17
a yet	-25
a you	-26
a you're	34
a zero	-17
a zip	-48
b a	-45
b about	23
b above	29
b absent	-50
b acid	-36
b across	29
b acts	-35
b add	78
b address	-16
b adds	38
b adhesive	20
b again	-34
b against	47
b air	32
b aisle	-16
b alarm	-29
b alarm's	-24
b allow	88
b alone	-27
b already	29
b alright	-17
b am	-20
b amp	80
b amps	94
b an	-44
b and	17
b another	-29
b any	22
b anything	32
b apart	57
b apiece	34
b apprentice	-53
b apt	-45
b aquastat	33
b architect	44
b are	68
b area	-18
b arm	-20
b around	-31
b arrived	42
b as	31
b ask	-19
b asked	32
b asking	-19
b attic	-18
b away	20
b b	-61
b back	-17
b backfill	57
b badge	-56
b baffles	15
b bags	19
b bakkie	-18
b bar	43
b bars	32
b basement	-47
b basin's	28
b bath	-18
b batten	25
b battery's	-50
b bay	-56
b bays	-72
b bead	17
b beam	19
b bearing	-18
b bearings	57
b because	40
b bed	-47
b bedroom	-60
b bedrooms	-25
b before	-35
b belts	18
b beltway	-83
b bench	31
b bent	33
b bet	-23
b better	28
b between	-63
b bid	-43
b big	-75
b billed	-23
b bin	-37
b birdied	-24
b birds	-16
b bit	-15
b black	39
b blacks	-32
b blast	25
b bldg	-39
b blew	16
b blinds	17
b blood	-74
b blow	47
b blower	26
b blown	-23
b board's	-15
b boards	39
b bogeyed	-22
b bolts	43
b bond's	-21
b book	18
b booked	-38
b boring	-26
b boss	-37
b both	-33
b bottom's	17
b bought	56
b bout	34
b box	-27
b bracket	-29
b bracket's	-32
b brackets	33
b break	16
b breaker	-62
b breaker's	59
b breakers	38
b bring	112
b bringing	30
b broke	110
b bronze	16
b brought	83
b brushed	-16
b bucket	-18
b building	-32
b built	-26
b bulb	22
b bump	29
b bundles	86
b bunnings	-18
b burned	42
b bus	-24
b busted	-32
b but	33
b buy	71
b buzz	61
b by	-17
b call	36
b calls	35
b cam	-53
b came	86
b camera	-25
b can	25
b can't	-23
b cans	25
b capacitor's	18
b caps	23
b card	15
b carpet	-22
b carton	18
b cases	28
b casing	-24
b cat	-21
b caulk	-28
b cause	22
b cbd	16
b ceiling's	19
b cell	-28
b center	33
b cfm	45
b ch	-35
b changed	44
b channel	-54
b charge	-43
b charged	-56
b charging	-27
b chelsea	-16
b chimney	-27
b chlorine's	52
b choir's	-40
b cinco	32
b circuit	-74
b ckts	-45
b claim's	-27
b class	-39
b cleaned	31
b cleanouts	16
b clearance	16
b clips	34
b close	44
b closer	31
b closes	-44
b coat	-28
b code	-44
b code's	-55
b cold	35
b cold's	36
b collar	31
b color	-22
b colour	-26
b column	-37
b compacted	28
b compaction's	21
b composite	15
b concrete's	-15
b control	40
b corner	48
b correction	16
b corta	73
b count's	40
b counted	-41
b counter	-71
b counter's	46
b counts	47
b cover	47
b cover's	70
b covers	19
b cr	-16
b cracked	46
b crane's	-33
b crowned	27
b curb's	31
b curtain's	-23
b curve	21
b customer	-28
b cut	101
b damper	18
b dash	-32
b date	-19
b dates	-18
b day	-69
b days	37
b deal	-42
b deck	22
b deductible's	-32
b deep	17
b degrees	23
b delta's	42
b den	46
b desk	-39
b detail	-16
b diagonals	82
b dialed	19
b didn't	-23
b digits	-58
b dimmers	58
b dining	-18
b dip	-31
b dirt	30
b dispenser	20
b display	-63
b do	-57
b doc	-17
b dock	-19
b doing	-58
b don't	-44
b door	-64
b doors	-32
b dos	45
b double	-27
b dowel	33
b dowels	20
b down	43
b downstairs	16
b draft's	50
b draw	29
b drawer	-55
b drawing	17
b draws	30
b drew	-34
b drop	72
b drop's	16
b drops	41
b drove	20
b drums	-15
b dry	60
b dryer	-21
b drywall	-47
b drywall's	28
b dump	15
b dumpsters	43
b dynamic	21
b e	-22
b each	66
b east	-20
b edge	35
b egress	-19
b eight	20
b eighteen	25
b eighth	20
b eighths	59
b elbows	24
b electrician	-28
b elevation	-25
b elevator	-78
b em	-31
b embed	43
b emt	23
b end	34
b end's	-35
b ended	38
b ends	-36
b engine	-15
b epoxy	-36
b error	-50
b every	21
b exam	-25
b except	19
b exit	-54
b expansion	16
b expires	-88
b exposure's	61
b extension	-22
b extension's	-36
b exterior	-44
b eyes	-35
b fall	-15
b fall's	18
b falls	-39
b far	25
b fault	-19
b fee	-20
b feeder	-21
b feeding	20
b feeds	-18
b feet	26
b fell	49
b fence	-16
b field	-29
b fifteen	73
b figure	39
b filter	20
b final	-20
b fingers	-17
b finished	-20
b first	45
b fitted	-17
b fix	-26
b fla	18
b flange	17
b flashes	-107
b flat	-51
b flew	-16
b flight	-58
b flights	-22
b floor	-28
b floor's	20
b flowing	55
b flue	30
b foot	22
b footer	-25
b footers	19
b footing's	30
b footy's	-16
b form	26
b forty	16
b forward	18
b found	50
b four	33
b fourteen	49
b fourth	-55
b framing	-23
b friday	-21
b from	-19
b front	37
b ft	27
b g	-36
b gallons	-42
b game	-18
b gap	21
b gap's	-24
b garage	64
b gas	-55
b gate	-85
b gates	25
b gauge	37
b gauged	21
b gave	52
b generator	58
b get	72
b gets	77
b gimme	89
b give	-50
b gives	-35
b glue	31
b go	20
b goal	-33
b goin	-19
b good	15
b got	23
b gotta	22
b gr	41
b grab	37
b grabbed	18
b grade's	17
b gray	-31
b green	-37
b grille	18
b grit	36
b grout's	60
b gutter's	-24
b guy	26
b guys	-27
b half	33
b hall	38
b hallway	17
b handrail's	33
b hangers	36
b hank	-23
b happy	-87
b hard	16
b hardware	-42
b has	59
b hatch	-39
b haul	-66
b have	39
b he	-103
b he'll	-26
b he's	-175
b head	56
b head's	34
b header	40
b header's	47
b headroom's	38
b hearth's	35
b height	40
b height's	31
b held	38
b her	22
b here	-46
b hes	-54
b high	59
b him	-64
b hinge	20
b hinges	-40
b his	-64
b hit	-44
b hits	27
b hockey	18
b hole	-33
b hole's	65
b holes	21
b hood	17
b hook's	20
b hour	-54
b hour's	-95
b hours	-43
b house	-16
b how	29
b hub	23
b humidity	56
b humidity's	36
b hundred	37
b hung	59
b hwy	-34
b i	20
b i'd	30
b if	42
b im	-61
b in	-42
b inch	42
b inches	29
b inlet's	29
b innings	-18
b inside	37
b inspector	-54
b install	-31
b instead	18
b interpass	23
b invert's	37
b invoice	-46
b ipad's	-38
b island	48
b it	33
b it'll	22
b it's	-60
b item	-33
b items	-32
b its	-21
b j	24
b jack's	17
b jan	21
b job	-44
b job's	-25
b joint	-19
b joists	40
b jumper	-87
b just	101
b k	-21
b kangaroos	-16
b keep	52
b kept	27
b key	-61
b keyed	-39
b keys	-43
b kick	26
b kicks	108
b kid	-44
b kid's	-31
b kids	67
b kind	37
b kit	18
b kitchen	57
b kits	20
b knees	-26
b knocked	-26
b knots	33
b kpa	41
b l	17
b l1	-18
b l2	-22
b laborer	20
b lad's	-22
b ladder's	-22
b laid	44
b landing	31
b lands	-47
b lap	107
b last	17
b lb	30
b least	64
b leaves	85
b led	19
b left	31
b leg	74
b lengths	16
b less	36
b let	-20
b level	-80
b lid	-17
b lifted	35
b light	-41
b lights	42
b lime	21
b limit's	33
b line	-44
b lintel	20
b lintel's	29
b litres	23
b little	-26
b load's	-26
b loads	-18
b lockbox	-16
b locked	-28
b locker	-17
b log	-16
b lol	-17
b long	-82
b longer	-18
b look	-40
b loop	-40
b loose	42
b lost	24
b lot	-97
b lounge	48
b low	54
b lp	-34
b lp2	-45
b lts	16
b lumber	-19
b lumber's	-38
b lunch	-19
b lvl's	42
b m	-49
b made	-40
b make	94
b makes	-17
b man	-24
b man's	-36
b marble	24
b mark	-43
b marked	-39
b married	-18
b materials	-53
b max	33
b maximum	35
b maybe	39
b mc	19
b me	30
b mean	-20
b meant	22
b measure	-25
b measured	23
b measures	-23
b medallion	20
b medium	50
b meeting	-18
b meter	33
b meter's	15
b metered	28
b mil	26
b mile	-22
b mils	19
b min	17
b minus	30
b minute	21
b minutes	-28
b mirror	30
b mirror's	28
b missing	39
b mix	56
b mixed	40
b mm	37
b mock	-18
b mode	-41
b modules	24
b moisture	79
b moisture's	38
b mon	-41
b more	38
b morning	43
b move	30
b moved	-87
b mrs	-37
b mud	-54
b must	31
b my	-76
b nail	33
b nailed	21
b nails	29
b near	-21
b necesito	66
b need	102
b needs	74
b net	-39
b neutral's	24
b new	-17
b next	-54
b nine	-26
b nineteen	-57
b nineteen's	27
b ninth	-24
b no	38
b nobody	-51
b nobody's	-50
b none	37
b north	22
b note	-53
b nothing	56
b now	73
b nozzle	-35
b number	-152
b number's	-101
b nursery	20
b ocean's	-34
b of	49
b off	-26
b offered	-74
b office	-32
b offset	19
b oh	-51
b ohm	37
b ohms	57
b oil	-38
b okay	-39
b old	-43
b ones	25
b only	80
b opening	34
b opening's	25
b opens	-35
b or	-29
b ordered	57
b ot	-20
b ought	16
b our	-52
b out	25
b out's	16
b outta	-15
b oven	19
b overhang's	21
b owe	-25
b owes	-18
b owner	-19
b owns	-23
b p	-45
b pack	-55
b packed	27
b packers	-22
b packs	75
b pad	23
b paddock	-16
b padlock's	-29
b page	-26
b paid	-25
b paint	-28
b paint's	-17
b painted	-36
b pan's	19
b panel	-17
b panel's	19
b paper	-29
b par	-18
b parked	-16
b parks	-23
b part	-50
b parts	18
b passed	-31
b past	-35
b patch	26
b pavers	26
b pay	-17
b pcs	-61
b percent	30
b permit	-30
b ph	21
b phase	-22
b phone	-31
b phone's	-31
b pick	43
b pickets	104
b pieces	31
b pier	-39
b pies	-23
b pin	-81
b pipe	47
b pipe's	16
b pitch	23
b pitched	-23
b place	-30
b plan	19
b plans	61
b plant	23
b plaster	16
b plastic	-20
b plates	20
b please	48
b plinth	32
b plot	-18
b plus	68
b po	-39
b point	-61
b pole	-31
b poly	-20
b pool	-25
b popped	-36
b port	-19
b pounds	48
b pour	-33
b poured	24
b power's	-27
b powerball	-15
b preheat	23
b prob	25
b profile's	25
b prv's	40
b psalm	-27
b pu	18
b pull	34
b pulled	-52
b pulling	46
b pulls	29
b pumped	66
b purlins	36
b put	58
b puts	31
b qty	61
b quarter	-35
b quiet	-19
b quit	-33
b quoted	-26
b r	-38
b race	-35
b rack	-66
b radio's	-15
b rafters	49
b rail	24
b rail's	36
b raise	60
b ramp	18
b range	44
b rapid	-32
b rate's	-19
b rated	18
b rather	-17
b ratio's	90
b rcbo	17
b rcbo's	22
b reach	-16
b read	53
b reading	60
b reads	78
b rebar's	21
b receptacles	15
b recirc	48
b red	-24
b redid	-19
b register's	33
b relief	47
b rental	-49
b replace	51
b report	-22
b return	60
b return's	36
b returned	35
b rev	23
b reveal's	37
b rfi	-16
b rh	29
b right	-71
b ring	-25
b rip	31
b ripped	15
b rise	77
b riser	-40
b rm	-90
b rock	47
b rod	29
b rod's	20
b roll	-21
b rolled	-39
b rolls	-39
b roof	-19
b room	-55
b rotors	-23
b rough	17
b roughed	18
b roughly	32
b round	-56
b row	-45
b rows	16
b rtu	-78
b run	34
b running	18
b runs	21
b s	27
b safe	-55
b sags	19
b same	-21
b sand	-23
b sat	20
b saturday	-41
b saves	-17
b saying	27
b says	21
b scaff	31
b scale	-82
b sch	-39
b screws	18
b seal	-24
b seat	27
b seat's	-36
b section	-47
b send	-33
b sent	80
b service	17
b serving	-15
b set	150
b sets	-68
b setting	-23
b seventeen	-19
b seventy	82
b shave	38
b she	-54
b she'll	-69
b she's	-86
b shedding's	-29
b sheet	-50
b sheets	36
b shell's	-31
b shellac	36
b shelves	36
b shelving	-47
b shift	-19
b shift's	-27
b shld	19
b shoe	17
b shop	-19
b short	85
b shorted	72
b shot	18
b should	82
b should've	52
b shower	-40
b shows	69
b side	50
b sign's	30
b silicone	33
b sill	49
b sill's	52
b since	-79
b siri	-22
b sister	46
b site	-34
b six	40
b sixteenth	-42
b sixty	56
b skirting	-20
b slab	47
b slab's	43
b slip	-17
b slope	-16
b slope's	32
b slump	98
b smokes	-30
b smoking	-34
b smoko	-45
b snake	-35
b snow	18
b so	33
b soft	26
b sold	69
b solid	-29
b some	30
b somebody	62
b something	-26
b sometime	-69
b somewhere	97
b space	21
b spaced	61
b spacing	54
b span's	21
b spare	23
b spec	56
b sphere	46
b splash	20
b spot	-19
b spring's	-26
b squad	-16
b squares	36
b squeak	31
b stack	32
b stage	-33
b stainless	21
b stair	-35
b stairs	-24
b stairwell	17
b standing	22
b start	-41
b started	-58
b starter	24
b starting	-43
b starts	-25
b stat	18
b stat's	22
b static	107
b static's	52
b station	-22
b steel	19
b stem	32
b step	-30
b step's	42
b steps	-21
b sticks	40
b stirrups	77
b stitch	-17
b stock	25
b stock's	-30
b stone	33
b strip	-24
b strips	28
b stub	29
b stud	19
b studio	-21
b studs	65
b stuff	46
b sub	-26
b sub's	-16
b subcool	49
b subcool's	19
b subfloor	38
b subfloor's	21
b suction's	20
b suite	-39
b summer	-29
b superheat	27
b superheat's	47
b supply	39
b supply's	46
b swap	37
b sweet	-16
b swing	-29
b table	-102
b tag	-43
b tagged	-21
b take	-18
b takes	-26
b talks	-35
b tap	42
b team's	-48
b temp	90
b tempered	16
b ten	-27
b tenant	-27
b terms	-71
b test	-43
b tested	48
b th	-31
b than	29
b that	-24
b that'll	-23
b that's	-62
b the	-19
b their	-38
b them	20
b then	-43
b thermostat's	46
b they	-40
b they'll	-41
b they're	-90
b they've	-20
b thick	34
b thin	68
b thing	-25
b thinks	-23
b third	-22
b thirteen	56
b this	-51
b those	25
b though	23
b thousand	-39
b three	27
b throat's	56
b through	-29
b throw	43
b throwing	-26
b throws	-43
b thurs	-20
b thursday	-20
b ticket	-29
b tide's	-47
b tie	28
b ties	33
b tight	18
b til	-49
b tile	32
b till	-38
b time	-42
b times	-53
b tires	-31
b to	44
b toast	20
b toilet	43
b tomorrow	-52
b ton	27
b too	20
b toolbox	-19
b top	-33
b torque	56
b total	29
b touch	27
b tracking	-18
b trailer	-48
b trap	23
b tray	32
b tread	-43
b treads	26
b trim	30
b trimmed	22
b tripped	-28
b tripping	24
b truck's	-72
b tune	-79
b turned	-48
b turning	-18
b turns	-17
b twenty	61
b two	22
b two's	17
b txt	-22
b type	-99
b u	-93
b unit	-107
b upsize	36
b upstairs	45
b upstand's	33
b use	42
b used	83
b utility	-19
b v	-20
b valve	70
b van	50
b vanity	47
b vent	38
b vikings	-42
b voices	-15
b voltage	70
b volts	42
b voted	-25
b wait	17
b waiting	24
b walk	-33
b wall	69
b wall's	36
b wallpaper	-22
b walnut	-43
b want	40
b wanted	34
b wants	51
b wardrobe	-53
b was	33
b wash	-39
b water's	37
b way	-41
b we	33
b we're	-54
b we've	20
b wednesday	-30
b wee	-36
b week	-29
b well	23
b wet	68
b what's	-39
b when	30
b where	28
b who's	-64
b wide	53
b width	25
b window	-61
b windows	21
b wire's	37
b with	32
b won't	24
b wood	-25
b work	-24
b works	-18
b would	23
b wound	17
b x	55
b yard	-19
b years	-39
b your	-40
b zero	-61
b zone	-71
b zz	-30
b ×	31
bare 1	-61
bare 2	49
bare 3	30
behind area area	21
behind area crews'	-66
behind area defect	-17
behind area end	24
behind area mark	-86
behind area part	-41
behind area plain	-36
behind break mark	-106
behind crews' area	-19
behind crews' end	-63
behind crews' finish	-16
behind crews' material	57
behind crews' number	29
behind crews' part	48
behind crews' plain	16
behind crews' strange	51
behind crews' surface	35
behind crews' unknown	-51
behind defect crews'	-22
behind defect others'	-15
behind defect plain	47
behind end area	-34
behind end crews'	26
behind end defect	115
behind end finish	-54
behind end fixture	32
behind end mark	-82
behind end material	33
behind end others'	-16
behind end part	69
behind end plain	39
behind end strange	-49
behind end verb	-59
behind finish area	-22
behind finish end	-26
behind finish mark	-34
behind finish verb	21
behind fixture defect	-29
behind fixture end	-35
behind fixture mark	-16
behind fixture others'	-15
behind fixture verb	-20
behind mark break	-23
behind mark crews'	44
behind mark defect	23
behind mark end	-24
behind mark finish	17
behind mark fixture	41
behind mark mark	-59
behind mark number	45
behind mark part	49
behind mark surface	-34
behind mark tool	16
behind mark unknown	37
behind material fixture	-41
behind material others'	29
behind material plain	38
behind material unknown	41
behind number end	-34
behind number number	-45
behind number unknown	-20
behind others' end	76
behind others' mark	111
behind others' material	16
behind others' others'	18
behind others' part	-44
behind others' plain	39
behind others' role	-29
behind others' surface	-46
behind others' unknown	-25
behind part defect	-52
behind part mark	17
behind part material	-24
behind part plain	-48
behind part verb	-19
behind plain area	60
behind plain crews'	26
behind plain defect	45
behind plain end	40
behind plain finish	22
behind plain mark	66
behind plain material	57
behind plain number	21
behind plain part	27
behind plain strange	-41
behind plain surface	23
behind plain tool	17
behind plain unknown	17
behind plain verb	21
behind role crews'	60
behind strange crews'	-20
behind strange mark	23
behind strange plain	-21
behind strange strange	-22
behind surface crews'	-16
behind surface defect	-39
behind surface end	50
behind surface fixture	31
behind surface others'	-19
behind surface part	-44
behind surface plain	-41
behind surface surface	22
behind tool end	-67
behind tool plain	-60
behind unknown end	-109
behind unknown mark	-68
behind unknown material	-37
behind unknown number	-48
behind unknown others'	-53
behind unknown part	-31
behind unknown plain	-47
behind unknown verb	46
behind verb crews'	-68
behind verb material	-29
behind verb others'	-33
behind verb part	-20
behind verb plain	-34
behind verb verb	-17
claims 2	-45
counted head area	63
counted head crews'	20
counted head finish	-16
counted head fixture	54
counted head material	113
counted head others'	-158
counted head part	123
counted head plain	-57
counted head role	-60
counted head strange	-95
counted head surface	43
counted head tool	58
counted head verb	-29
counted next defect	41
counted next fixture	34
counted next mark	-62
counted next material	63
counted next others'	-24
counted next part	40
counted next role	-54
counted next strange	-62
counted next surface	-18
counted next tool	44
counted next work	-31
form 0figures 4	-54
form figures 2	45
form figures 4	-66
form figures 5	-43
form oh	-42
form parts	57
head 1	38
head 2	20
head 3	49
head none	-16
l of cars	-37
l of clock	-97
l of kin	-39
l of media	15
l of money	-61
l of papers	-39
l of past	27
l of phones	-51
l of roads	-107
l of school	-64
l of services	-28
l of sport	-41
l1 	32
l1 
	-98
l1 "	38
l1 #	-20
l1 $	-92
l1 (	22
l1 +	48
l1 ,	50
l1 -	-66
l1 3	-17
l1 :	65
l1 @	20
l1 a	29
l1 about	27
l1 add	63
l1 adds	38
l1 after	-51
l1 against	35
l1 aisle	-16
l1 all	65
l1 allow	42
l1 amp	29
l1 an	-72
l1 and	86
l1 another	-25
l1 apartment	-27
l1 apt	-45
l1 are	29
l1 around	-30
l1 asking	-19
l1 at	26
l1 b	-29
l1 backfill	57
l1 bars	26
l1 bath	-83
l1 bath's	20
l1 bay	-91
l1 be	80
l1 beam	33
l1 bed	-49
l1 bedroom	-79
l1 been	34
l1 before	-29
l1 between	-25
l1 big	-60
l1 bin	-38
l1 birds	-16
l1 bldg	-37
l1 bogeyed	-22
l1 boring	-26
l1 bottom	-36
l1 bottom's	17
l1 bought	81
l1 bout	34
l1 box	-20
l1 bracket	22
l1 breaker	-73
l1 bring	113
l1 broke	26
l1 brought	73
l1 building	-38
l1 bus	-24
l1 but	36
l1 buy	87
l1 by	24
l1 called	-17
l1 can	30
l1 cat	-26
l1 ceiling's	19
l1 ch	-35
l1 change	20
l1 channel	-43
l1 charging	-27
l1 cinco	26
l1 circuit	-88
l1 ckts	-20
l1 class	-28
l1 closet	35
l1 coat	-35
l1 code	-95
l1 code's	-50
l1 cold's	36
l1 correction	16
l1 corta	36
l1 count's	27
l1 counter	-21
l1 cover's	57
l1 cr	-16
l1 crowned	27
l1 cut	49
l1 day	-110
l1 deductible's	-32
l1 delta's	42
l1 den	15
l1 dirt	21
l1 do	-18
l1 dock	-19
l1 doing	-16
l1 done	22
l1 door	-51
l1 double	-38
l1 dowels	20
l1 drawer	-45
l1 drawing	-18
l1 drew	-31
l1 drops	34
l1 drove	21
l1 dynamic	21
l1 e	-22
l1 each	-37
l1 edge	31
l1 eight	-17
l1 elevator	-22
l1 eleven	-26
l1 embed	43
l1 end's	-31
l1 error	-50
l1 every	32
l1 exit	-66
l1 expires	-50
l1 exposure's	61
l1 extension's	-36
l1 exterior	-21
l1 eyes	-35
l1 f	-18
l1 fall's	18
l1 falls	-22
l1 fault	-22
l1 feeder	-20
l1 fell	46
l1 finished	-22
l1 first	-15
l1 fit	19
l1 five	-35
l1 fla	18
l1 flashes	-66
l1 flat	-46
l1 floor	-61
l1 foot	28
l1 forward	56
l1 found	56
l1 four	-47
l1 fourteen	-44
l1 from	-37
l1 front	37
l1 full	48
l1 g	-18
l1 gap's	-18
l1 garage	64
l1 gate	-29
l1 get	147
l1 gets	62
l1 gimme	89
l1 going	45
l1 gone	-26
l1 good	-33
l1 got	126
l1 grab	60
l1 grabbed	16
l1 grade	-32
l1 half	-15
l1 hall	55
l1 has	99
l1 have	68
l1 he's	-104
l1 head	18
l1 headroom's	25
l1 hearth's	35
l1 height	40
l1 height's	24
l1 hinges	17
l1 hit	-24
l1 hole	-61
l1 hole's	31
l1 homeruns	18
l1 hour's	-52
l1 hub	24
l1 humidity's	30
l1 hundred	-23
l1 hung	41
l1 hwy	-19
l1 i'm	-26
l1 im	-27
l1 in	-72
l1 inch	64
l1 install	-26
l1 interpass	23
l1 invert's	37
l1 invoice	-27
l1 is	60
l1 it	83
l1 it's	-58
l1 item	-29
l1 items	-17
l1 its	-16
l1 job	-35
l1 job's	-25
l1 jumper	-29
l1 just	96
l1 kept	45
l1 key	-63
l1 kid's	-26
l1 kitchen	30
l1 knock	27
l1 knocked	-24
l1 laborer	60
l1 lad's	-22
l1 ladder	-20
l1 laid	31
l1 landing	28
l1 lap	45
l1 last	22
l1 least	64
l1 leaves	81
l1 left	32
l1 level	-56
l1 like	-29
l1 limit's	33
l1 line	-80
l1 lintel	17
l1 lintel's	29
l1 long	-61
l1 longer	-18
l1 loop	-42
l1 lost	26
l1 lot	-95
l1 low	15
l1 lp	-34
l1 lts	16
l1 lvl	-36
l1 m	-32
l1 make	18
l1 makes	-17
l1 man's	-36
l1 mark	-37
l1 maybe	101
l1 me	47
l1 meant	21
l1 measure	-32
l1 measured	22
l1 meter's	15
l1 minus	30
l1 mm	-36
l1 mode	-41
l1 moisture	31
l1 nd	-19
l1 necesito	38
l1 need	135
l1 needs	58
l1 net	-40
l1 neutral's	24
l1 new	-87
l1 nine	-22
l1 nobody's	-50
l1 not	45
l1 note	-53
l1 now	39
l1 nozzle	-35
l1 number	-203
l1 number's	-89
l1 ocean's	-34
l1 of	-46
l1 off	-18
l1 offered	-25
l1 oh	-45
l1 old	-82
l1 on	-22
l1 one	-34
l1 ones	57
l1 only	83
l1 open	-17
l1 opened	-17
l1 or	-41
l1 order	21
l1 ordered	19
l1 other	-21
l1 ought	-17
l1 out	97
l1 overhang's	21
l1 owns	-23
l1 p	-47
l1 packers	-22
l1 paddock	-16
l1 page	-22
l1 pan's	18
l1 panel	-21
l1 panel's	19
l1 part	-31
l1 past	-23
l1 pier	-41
l1 pin	-27
l1 plant	23
l1 plate	31
l1 plot	-18
l1 plus	65
l1 po	-16
l1 port	-19
l1 poured	18
l1 pressure's	-29
l1 profile's	25
l1 psalm	-27
l1 pull	49
l1 pulling	40
l1 pump	-20
l1 put	54
l1 quarter	78
l1 quoted	-20
l1 r	-65
l1 rack	-33
l1 ran	43
l1 rate's	-19
l1 rated	44
l1 ratio's	47
l1 read	54
l1 reading	48
l1 reads	61
l1 recirc	48
l1 red	39
l1 replace	23
l1 replaced	35
l1 return	16
l1 returned	18
l1 reveal's	18
l1 rfi	-16
l1 rh	23
l1 right	-53
l1 rise	57
l1 riser	-32
l1 rm	-97
l1 rolled	-38
l1 room	-91
l1 roughly	32
l1 row	-28
l1 rtu	-20
l1 rule	-26
l1 run	37
l1 running	18
l1 sags	17
l1 saves	-17
l1 say	25
l1 says	44
l1 scaff	31
l1 sch	-49
l1 seat's	-36
l1 second	-24
l1 section	-36
l1 see	46
l1 sent	33
l1 serving	-15
l1 set	53
l1 setting	-18
l1 shave	38
l1 she's	-54
l1 sheet	-49
l1 shelf	-40
l1 short	56
l1 shot	-17
l1 shower	-21
l1 shows	37
l1 side	19
l1 since	-42
l1 sister	29
l1 six	32
l1 sixteen	-18
l1 sixty	-17
l1 size	-15
l1 slide	-45
l1 slip	-17
l1 slope's	32
l1 so	88
l1 solid	-26
l1 spacing	22
l1 span's	21
l1 spec	22
l1 squad	-16
l1 square	-43
l1 stack	18
l1 stage	-33
l1 stair	-31
l1 starter	24
l1 static	58
l1 static's	29
l1 station	-22
l1 step	-39
l1 still	59
l1 stone	33
l1 strike	-44
l1 studio	-23
l1 subcool	31
l1 suction's	17
l1 suite	-37
l1 superheat's	16
l1 swap	43
l1 sweet	-16
l1 switch	-52
l1 t	17
l1 table	-18
l1 tag	-27
l1 take	37
l1 takes	-28
l1 talks	-35
l1 temp	26
l1 ten	-21
l1 than	30
l1 that	-78
l1 that's	-18
l1 the	-117
l1 them	-28
l1 then	-19
l1 there	-24
l1 there's	15
l1 thing	-44
l1 this	-27
l1 throat's	56
l1 throw	41
l1 til	-45
l1 till	-56
l1 to	65
l1 took	72
l1 top	-19
l1 tread	-41
l1 truck	-57
l1 turned	-31
l1 turning	-18
l1 twelve	-31
l1 two	23
l1 two's	29
l1 type	-69
l1 under	95
l1 unit	-139
l1 up	35
l1 us	49
l1 use	34
l1 used	90
l1 vanity	31
l1 vikings	-22
l1 voltage	70
l1 volts	29
l1 wall	30
l1 wall's	26
l1 want	61
l1 wanted	20
l1 wants	39
l1 was	76
l1 we're	50
l1 well	38
l1 wide	15
l1 with	28
l1 x	98
l1 you	-24
l1 your	-50
l1 zone	-122
l1 £	-43
l1 ×	31
l1. "	38
l1. #	28
l1. $	-92
l1. 's	99
l1. (	22
l1. +	48
l1. ,	50
l1. -	-66
l1. -ed	60
l1. -ing	26
l1. -ly	57
l1. -s	73
l1. /	-88
l1. 1	-64
l1. :	65
l1. @	20
l1. Name	-92
l1. letter	-53
l1. one	-109
l1. unit	-55
l1. £	-43
l2 	-17
l2 
	25
l2 '	50
l2 (	39
l2 ,	24
l2 1	-71
l2 11	45
l2 118	-22
l2 12	22
l2 1700	16
l2 18	-26
l2 180	37
l2 31	-22
l2 34	21
l2 4	-20
l2 400	-26
l2 47	-35
l2 555	-17
l2 6	-62
l2 60	19
l2 600	36
l2 68	65
l2 9	20
l2 95	-36
l2 a	-126
l2 acts	-35
l2 again	-44
l2 against	17
l2 all	-23
l2 allow	60
l2 already	17
l2 an	-41
l2 and	26
l2 anything	27
l2 apartment	30
l2 apprentice	-46
l2 aquastat	30
l2 architect	27
l2 are	17
l2 asked	25
l2 at	-100
l2 away	25
l2 back	-27
l2 basement	29
l2 battery's	-50
l2 be	35
l2 bedroom	16
l2 been	-17
l2 bench	23
l2 bet	-23
l2 billed	-23
l2 black	36
l2 blacks	-33
l2 blast	25
l2 block	21
l2 blood	-41
l2 bolts	18
l2 bond's	-21
l2 booked	-15
l2 boss	-25
l2 bottom	18
l2 box	24
l2 boxes	47
l2 bracket	31
l2 breaker's	36
l2 broke	65
l2 bundles	86
l2 burned	35
l2 buzz	61
l2 by	-63
l2 call	89
l2 calls	24
l2 came	22
l2 cap	23
l2 caps	16
l2 change	-67
l2 changed	26
l2 charged	-56
l2 check	-23
l2 chimney	-30
l2 chlorine's	52
l2 choir's	-26
l2 clearance	15
l2 close	33
l2 closer	38
l2 closes	-37
l2 code	72
l2 color	-19
l2 column	-37
l2 comes	28
l2 coming	-43
l2 compacted	28
l2 compaction's	21
l2 corner	24
l2 count	-19
l2 counter's	32
l2 counts	28
l2 curtain's	-23
l2 curve	18
l2 cut	59
l2 day	-29
l2 days	45
l2 diagonals	61
l2 dip	-31
l2 display	-63
l2 dog	-21
l2 don't	-86
l2 dos	45
l2 dowel	23
l2 down	30
l2 draft's	44
l2 drawing	24
l2 dropped	29
l2 dryer	-26
l2 drywall's	24
l2 eight	26
l2 eighteen	19
l2 em	35
l2 epoxy	-28
l2 except	-15
l2 exit	16
l2 fan	-27
l2 fault	-19
l2 fee	-19
l2 fifty	-25
l2 finish	20
l2 fit	41
l2 five	35
l2 flights	-22
l2 floor's	15
l2 flue	36
l2 foot	36
l2 footer	-25
l2 for	-62
l2 forty	-31
l2 forward	-46
l2 four	45
l2 fourth	-55
l2 friday	-31
l2 from	-43
l2 ft	38
l2 full	-64
l2 g	-16
l2 gallons	-20
l2 gap's	-17
l2 gas	-33
l2 gate	-23
l2 gave	71
l2 get	-39
l2 give	-30
l2 gives	-48
l2 glass	22
l2 goin	-19
l2 going	-50
l2 gone	18
l2 good	26
l2 gotta	53
l2 grab	-27
l2 guy	53
l2 half	-40
l2 happy	-50
l2 hardware	-58
l2 hatch	-17
l2 haul	-66
l2 have	22
l2 hdw	-16
l2 he	-51
l2 head	52
l2 header	31
l2 header's	30
l2 heads	-27
l2 heater	15
l2 held	20
l2 here	-31
l2 hes	-24
l2 high	61
l2 hinges	-28
l2 his	-17
l2 hole's	17
l2 hook's	17
l2 hot	-18
l2 hour	-24
l2 hours	-28
l2 house	-23
l2 humidity	31
l2 hundred	20
l2 i	87
l2 i'd	37
l2 i'll	17
l2 in	-61
l2 inch	38
l2 inches	15
l2 innings	-18
l2 inside	33
l2 instead	51
l2 ipad's	-38
l2 it'll	30
l2 it's	-26
l2 joists	25
l2 keys	-58
l2 kid	-43
l2 kit	23
l2 kitchen	-29
l2 knees	-26
l2 knots	33
l2 lands	-49
l2 lap	81
l2 left	54
l2 leg	57
l2 lengths	21
l2 level	-23
l2 lime	21
l2 load's	-26
l2 locked	-28
l2 long	16
l2 loose	31
l2 low	66
l2 lp2	-20
l2 lunch	-18
l2 lvl	28
l2 m	17
l2 make	82
l2 materials	-28
l2 maybe	-30
l2 medium	17
l2 meter	46
l2 mil	-40
l2 mile	-21
l2 missing	43
l2 mix	39
l2 mixed	19
l2 mm	36
l2 moisture's	31
l2 mon	16
l2 monday	28
l2 more	19
l2 morning	26
l2 my	16
l2 nail	32
l2 necesito	26
l2 need	19
l2 needs	26
l2 new	37
l2 nineteen	-33
l2 no	-74
l2 not	-63
l2 number	-23
l2 of	-64
l2 of cars	-22
l2 of clock	-35
l2 of food	-38
l2 of kin	-33
l2 of money	-64
l2 of past	-17
l2 of phones	33
l2 of roads	42
l2 of school	-80
l2 of sport	-23
l2 off	-78
l2 office	-16
l2 offset	19
l2 oh	-21
l2 ok	-32
l2 old	-21
l2 on	-65
l2 one	-34
l2 ones	33
l2 only	48
l2 opening	19
l2 order	-18
l2 ot	-20
l2 out	-54
l2 outlets	23
l2 owe	-25
l2 owes	-18
l2 pack	-21
l2 packs	74
l2 pad	31
l2 paint	-21
l2 parks	-23
l2 part	-16
l2 passed	-23
l2 pcs	-69
l2 per	-22
l2 permit	-24
l2 ph	21
l2 phone's	-31
l2 pick	83
l2 picked	18
l2 pickets	83
l2 pin	-31
l2 pipe	39
l2 pipe's	16
l2 plate	-19
l2 powerball	-17
l2 pressure's	19
l2 prob	32
l2 prv's	40
l2 pumped	18
l2 purlins	25
l2 put	67
l2 puts	31
l2 qty	63
l2 quarter	-32
l2 quiet	-18
l2 r	-54
l2 race	-35
l2 rafters	22
l2 rail	28
l2 rail's	15
l2 raise	55
l2 ran	-44
l2 range	31
l2 rated	-24
l2 rather	-19
l2 rcbo's	16
l2 real	30
l2 rebar's	-47
l2 red	-57
l2 return	50
l2 return's	33
l2 ring	-25
l2 rod	16
l2 room	-29
l2 rough	22
l2 round	-63
l2 rows	16
l2 rtu	-51
l2 sand	-25
l2 saturday	-15
l2 says	28
l2 screws	30
l2 see	-27
l2 sent	32
l2 set	89
l2 sets	-80
l2 seven	-18
l2 seventy	20
l2 she'll	-58
l2 she's	-21
l2 shedding's	-27
l2 shelf	37
l2 shift's	-27
l2 shim	17
l2 shop	-16
l2 short	44
l2 shorted	70
l2 shot	64
l2 should	60
l2 should've	34
l2 sill	36
l2 sill's	38
l2 site	-20
l2 six	-33
l2 sixteen	15
l2 sixteenth	-51
l2 sixty	29
l2 slump	39
l2 smokes	-30
l2 smoking	-34
l2 snake	-35
l2 so	31
l2 soft	21
l2 sometime	-36
l2 somewhere	80
l2 spaced	58
l2 spec	48
l2 sphere	46
l2 splash	20
l2 spring's	-32
l2 squares	15
l2 stairs	-29
l2 stairwell	21
l2 starting	-43
l2 static's	17
l2 sticks	47
l2 still	-30
l2 stirrups	77
l2 stock's	-30
l2 string	29
l2 stuck	25
l2 studs	39
l2 sub	-26
l2 subfloor's	19
l2 summer	-25
l2 supply's	24
l2 switch	17
l2 table	-58
l2 take	-42
l2 tempered	16
l2 ten	-67
l2 terms	-45
l2 tested	48
l2 that	53
l2 that's	-41
l2 the	-92
l2 them	29
l2 thermostat's	44
l2 they're	-47
l2 thin	20
l2 third	-41
l2 three	68
l2 throwing	-15
l2 throws	-43
l2 thursday	-26
l2 tide's	-47
l2 ties	25
l2 time	-18
l2 to	-44
l2 toast	19
l2 tomorrow	-75
l2 trap	30
l2 truck	21
l2 twelve	37
l2 two	-54
l2 type	-64
l2 u	-36
l2 under	-17
l2 unit	-23
l2 up	-21
l2 us	-34
l2 vanity	53
l2 wall	37
l2 wants	-26
l2 was	-70
l2 washer	28
l2 water's	34
l2 ways	-24
l2 we	66
l2 we're	-18
l2 wee	-36
l2 were	16
l2 what's	-48
l2 width	24
l2 will	27
l2 window	-60
l2 wound	17
l2 years	-42
l2 you	20
l2 zero	-60
l2. #	-18
l2. '	50
l2. (	39
l2. ,	24
l2. -ed	46
l2. -s	47
l2. /	20
l2. 1	-15
l2. Name	-28
l2. letter	41
l2. n't	-89
l2. one	-59
l2. unit	30
l3 
	-17
l3 '	-16
l3 (	17
l3 ,	24
l3 -	-21
l3 /	17
l3 1	-38
l3 1.5	31
l3 10	-73
l3 12	41
l3 16	-22
l3 1750	42
l3 2	18
l3 2214	-22
l3 3	19
l3 5	-17
l3 6	-17
l3 6120	-25
l3 7	-43
l3 8	17
l3 9	-17
l3 :	-19
l3 about	-22
l3 all	-39
l3 already	16
l3 also	-22
l3 am	-23
l3 amp	15
l3 amps	51
l3 an	47
l3 apart	44
l3 apiece	34
l3 are	17
l3 as	18
l3 at	-98
l3 b	-28
l3 back	-28
l3 bath	78
l3 bath's	16
l3 batten	25
l3 bay	50
l3 be	-48
l3 better	19
l3 between	-56
l3 big	21
l3 birdied	-22
l3 blow	28
l3 board's	-15
l3 bolt	-36
l3 bronze	16
l3 building	26
l3 bump	16
l3 busted	-30
l3 but	-31
l3 buy	-16
l3 by	48
l3 call	-25
l3 came	67
l3 can't	26
l3 change	52
l3 changed	21
l3 channel	-47
l3 ckts	-27
l3 claim's	-28
l3 cleaned	35
l3 cleanouts	16
l3 clear	38
l3 code	-25
l3 concrete's	-15
l3 corta	45
l3 covers	16
l3 cracked	31
l3 crane's	-26
l3 cut	40
l3 deep	-19
l3 den	27
l3 digits	-44
l3 dimmers	70
l3 door	-18
l3 dryer	25
l3 dump	15
l3 dumpsters	33
l3 each	63
l3 eight	31
l3 eighty	-44
l3 ended	38
l3 expires	-49
l3 f	26
l3 falls	-20
l3 fan	20
l3 feeding	20
l3 fifty	-22
l3 fire	-20
l3 first	65
l3 flashes	-51
l3 flat	-32
l3 flew	-16
l3 foot	29
l3 for	16
l3 form	27
l3 four	-42
l3 fourteen	38
l3 from	-27
l3 gallons	-35
l3 gate	-40
l3 generator	31
l3 get	-64
l3 gets	29
l3 goal	-31
l3 goes	21
l3 going	-39
l3 gone	23
l3 grab	33
l3 gray	-26
l3 grout's	51
l3 hank	-23
l3 he	-53
l3 he's	-36
l3 heads	22
l3 her	-28
l3 hes	-31
l3 him	-40
l3 hinges	-41
l3 his	-20
l3 hit	-16
l3 hole	23
l3 hour	-27
l3 hour's	-19
l3 hours	-16
l3 hung	21
l3 i'd	26
l3 i'm	36
l3 if	60
l3 im	-39
l3 in	-20
l3 inch	32
l3 inlet's	29
l3 is	-40
l3 island	21
l3 it's	-19
l3 its	-26
l3 jack's	17
l3 jumper	-62
l3 keep	61
l3 kicks	56
l3 kids	33
l3 knock	-21
l3 kpa	41
l3 last	-31
l3 left	-25
l3 leg	55
l3 let	-38
l3 lifted	33
l3 light	-35
l3 load	-25
l3 loads	-18
l3 long	27
l3 look	-17
l3 loose	22
l3 lumber's	-38
l3 marked	-54
l3 me	22
l3 mirror's	16
l3 missing	16
l3 mix	63
l3 more	36
l3 move	30
l3 moved	-53
l3 my	-67
l3 new	16
l3 next	-58
l3 nine	65
l3 nobody	-44
l3 nothing	35
l3 number	55
l3 of	19
l3 off	-16
l3 oh	25
l3 ohms	27
l3 ok	-18
l3 old	78
l3 on	23
l3 ones	-19
l3 ordered	18
l3 other	54
l3 ought	34
l3 out	-25
l3 outlets	-25
l3 owner	-20
l3 plans	66
l3 plinth	27
l3 plus	17
l3 press	-21
l3 pumped	54
l3 put	-53
l3 quit	-34
l3 r	29
l3 rack	-42
l3 rafters	29
l3 ratio's	52
l3 register's	31
l3 relief	47
l3 rental	-27
l3 rev	37
l3 rip	31
l3 rise	37
l3 room	27
l3 row	-16
l3 run	24
l3 s	27
l3 safe	-32
l3 says	-25
l3 second	18
l3 see	-23
l3 service	17
l3 seven	24
l3 seventy	23
l3 she	-45
l3 shelves	18
l3 should	26
l3 sign's	30
l3 since	-50
l3 six	-23
l3 slide	41
l3 smoko	-26
l3 sold	-18
l3 some	33
l3 somebody	42
l3 spacing	16
l3 stairs	17
l3 start	-34
l3 started	-53
l3 stat's	-26
l3 static	21
l3 steel	16
l3 steps	-31
l3 still	-37
l3 stub	27
l3 subcool	20
l3 superheat's	31
l3 supposed	19
l3 switch	-27
l3 tap	20
l3 tape	-19
l3 team's	-36
l3 temp	53
l3 ten	-29
l3 test	-46
l3 th	-16
l3 that's	-19
l3 the	34
l3 them	21
l3 then	16
l3 there	52
l3 they	-22
l3 they're	-16
l3 thick	47
l3 thinks	-23
l3 thirteen	48
l3 thirty	-27
l3 three	-48
l3 thurs	-20
l3 thursday	16
l3 ticket	-22
l3 tie	37
l3 tile	34
l3 times	-36
l3 tires	-31
l3 to	29
l3 tomorrow	27
l3 too	30
l3 top	-15
l3 torque	56
l3 touch	25
l3 trim	24
l3 tripped	-22
l3 truck	23
l3 truck's	-19
l3 tune	-79
l3 twelve	33
l3 two	-16
l3 txt	-16
l3 u	-42
l3 unit	34
l3 up	-40
l3 upsize	36
l3 upstairs	21
l3 used	17
l3 valve	19
l3 van	21
l3 vent	24
l3 vikings	-22
l3 voices	-15
l3 voted	-21
l3 wall	-15
l3 ways	17
l3 we	-27
l3 well	30
l3 wet	17
l3 white	38
l3 wide	17
l3 wire's	22
l3 wood	-32
l3 work	-16
l3 x	31
l3 yard	-25
l3 you	-57
l3 zz	-30
l3. '	-16
l3. (	17
l3. ,	24
l3. -	-21
l3. -ed	-34
l3. -ing	33
l3. :	-19
l3. letter	16
l3. n't	39
letter head 0	-55
letter head none	-25
long 10	-31
long 30	35
long 6	19
long undefined	-20
more figures 5	-23
more l. word	-47
more r 	-33
more r. #	-33
more r. word	-23
more words round	-38
names 0	-18
names 0 strange 0	32
names 0 strange 1	-67
names 0 strange 2	-112
names 1 strange 1	-41
names 1 strange 2	-24
names 2 strange 1	47
names 2 strange 2	45
names 3	26
of cars	37
of food	-25
of kin	-74
of media	-82
of money	-57
of past	-23
of phones	-60
of roads	-30
of school	-44
of services	21
of so many 0	42
of so many 1	-42
of so many 2	-36
of so many 3	-34
one head 0	20
one head none	-114
r of body	-41
r of cars	32
r of clock	-29
r of food	-54
r of kin	-84
r of money	-161
r of services	51
r of sport	-20
r1 )	-65
r1 ,	37
r1 -	-87
r1 .	24
r1 12	26
r1 2	49
r1 3	-21
r1 4	19
r1 50	-26
r1 555	-17
r1 7	-28
r1 :	-121
r1 @	16
r1 a	-27
r1 aa	18
r1 above	40
r1 across	32
r1 adds	-28
r1 advil	-21
r1 after	18
r1 again	-44
r1 against	36
r1 air	-17
r1 alarm	-22
r1 along	16
r1 already	-51
r1 an	-64
r1 anchors	20
r1 and	-18
r1 apart	66
r1 apiece	31
r1 area	-28
r1 as	-28
r1 at	39
r1 b	-40
r1 baby	18
r1 back	43
r1 bad	29
r1 baffles	15
r1 banksia	-21
r1 bars	-17
r1 base	22
r1 baths	24
r1 batts	-67
r1 bays	-29
r1 be	21
r1 bedroom	-20
r1 belt	-21
r1 blade	-42
r1 blades	32
r1 blank	17
r1 blinds	42
r1 blocks	16
r1 blown	19
r1 board	35
r1 boards	58
r1 bracket	25
r1 brass	39
r1 brg	17
r1 bricks	-16
r1 broke	-18
r1 bucks	-135
r1 burner	-53
r1 but	33
r1 by	55
r1 c	-23
r1 calls	-16
r1 can	-34
r1 cells	31
r1 cement	-18
r1 centers	25
r1 centres	24
r1 chance	-15
r1 clear	34
r1 closed	44
r1 closets	19
r1 coffee	-22
r1 come	-17
r1 coming	31
r1 common	38
r1 connections	-16
r1 corner	51
r1 corridor	-19
r1 cr	21
r1 cracked	22
r1 creams	-16
r1 crew	-30
r1 crows	-33
r1 cut	18
r1 d	-16
r1 dash	-19
r1 dead	29
r1 decks	18
r1 deep	69
r1 den	33
r1 dentists	-43
r1 dimmers	23
r1 dollar	-49
r1 dollars	-21
r1 don't	36
r1 done	57
r1 dont	-16
r1 door	-18
r1 doors	24
r1 double	16
r1 down	22
r1 drip	15
r1 dutchmen	25
r1 dynamic	24
r1 each	81
r1 elbows	16
r1 elsewhere	16
r1 emer	16
r1 euro	-91
r1 even	27
r1 every	-25
r1 exit	28
r1 extra	60
r1 extras	50
r1 faced	-17
r1 fall	38
r1 fifty	-39
r1 fingers	-27
r1 five	-64
r1 flat	27
r1 floor	24
r1 flowing	32
r1 forty	-22
r1 four	-47
r1 fourteen	-20
r1 gang	-75
r1 gets	-35
r1 give	42
r1 go	-59
r1 goes	-32
r1 going	-23
r1 gone	-34
r1 good	23
r1 got	-22
r1 grille	-41
r1 guys	-53
r1 had	-21
r1 hall	37
r1 hand	-34
r1 handle	-60
r1 hangers	15
r1 has	-72
r1 have	32
r1 he'll	-36
r1 head	23
r1 head's	17
r1 heads	69
r1 helpers	-33
r1 here	86
r1 high	98
r1 hinges	33
r1 hit	-23
r1 hits	17
r1 hole	-87
r1 hooks	28
r1 hot	-19
r1 house	-23
r1 hundreds	-24
r1 i	66
r1 i'll	26
r1 i've	-17
r1 in	20
r1 instead	28
r1 iron	-29
r1 is	-120
r1 ish	-21
r1 it	-25
r1 it'll	-35
r1 it's	-20
r1 juniper	-25
r1 just	74
r1 keys	-18
r1 kids	-15
r1 kinds	-38
r1 ladders	17
r1 larch	-19
r1 last	-22
r1 laundromats	-23
r1 layer	-74
r1 layers	20
r1 left	73
r1 leg	-19
r1 lift	-24
r1 like	23
r1 limiter	41
r1 living	17
r1 location	46
r1 long	73
r1 loose	23
r1 love	-29
r1 lower	17
r1 man	-27
r1 maple	-41
r1 max	55
r1 modules	22
r1 more	120
r1 nail	26
r1 need	42
r1 needs	-72
r1 net	-45
r1 new	51
r1 next	-23
r1 niches	20
r1 nine	20
r1 ninety	-61
r1 ninth	-22
r1 no	21
r1 north	-16
r1 nos	23
r1 not	15
r1 nothing	-30
r1 now	-21
r1 o'clock	-95
r1 obscure	16
r1 oc	49
r1 oclock	-27
r1 off	48
r1 outlets	30
r1 over	-23
r1 packers	-22
r1 panel	-112
r1 panhead	-29
r1 part	-57
r1 parts	56
r1 pavers	17
r1 people	-16
r1 per	69
r1 piers	23
r1 plate	33
r1 plinth	19
r1 pm	-29
r1 podium	-17
r1 problems	-21
r1 proud	22
r1 pulled	32
r1 put	-28
r1 quarter	-27
r1 quid	-27
r1 rafters	16
r1 rattle	24
r1 reads	-36
r1 ready	-19
r1 receps	17
r1 reducer	15
r1 refused	-26
r1 return's	26
r1 right	-19
r1 rod	-18
r1 roof	-23
r1 rooms	16
r1 rubber	22
r1 running	25
r1 runs	45
r1 sash	-16
r1 says	-58
r1 screens	45
r1 second	-63
r1 seeds	-32
r1 seven	-18
r1 shakes	-16
r1 sharp	-38
r1 she	-17
r1 shelf	-46
r1 shift	-39
r1 shims	24
r1 shingles	-23
r1 short	35
r1 should	83
r1 shows	-24
r1 side	-34
r1 sides	-28
r1 silicone	-28
r1 since	-31
r1 sink	50
r1 six	-42
r1 slope	19
r1 smoke	25
r1 smokes	-21
r1 so	37
r1 soft	-20
r1 something	-39
r1 space	17
r1 spaces	30
r1 spare	55
r1 speeds	-17
r1 split	-18
r1 spots	-23
r1 sprinkler	37
r1 square	-19
r1 stage	-33
r1 stakes	16
r1 stars	-43
r1 steps	-38
r1 still	63
r1 stone	-16
r1 stops	-20
r1 straps	22
r1 strikes	-52
r1 studs	49
r1 sugars	-17
r1 sure	-22
r1 switch	26
r1 tall	20
r1 ten	36
r1 the	-42
r1 then	-40
r1 they	19
r1 thick	46
r1 thing	-16
r1 things	-20
r1 thirty	21
r1 this	-32
r1 three	24
r1 through	-15
r1 til	-16
r1 till	-23
r1 times	-108
r1 tip	-21
r1 to	46
r1 together	-41
r1 toilet	33
r1 toilets	36
r1 tomorrow	-30
r1 tonight	21
r1 total	26
r1 toward	30
r1 towel	19
r1 treads	23
r1 tries	54
r1 tripped	-39
r1 tub	-21
r1 two	-30
r1 u	-16
r1 up	21
r1 usb	21
r1 valve	-22
r1 voices	-26
r1 wafers	22
r1 walls	30
r1 wants	-26
r1 was	-64
r1 waste	15
r1 wax	19
r1 way	-73
r1 ways	-49
r1 we're	-32
r1 wednesday	25
r1 were	22
r1 where	39
r1 white	22
r1 wide	62
r1 will	50
r1 window	-42
r1 windows	61
r1 wire	-72
r1 wood	-29
r1 work	47
r1 wrongs	-37
r1 x	58
r1. 's	23
r1. )	-65
r1. ,	37
r1. -	-87
r1. -ing	34
r1. .	24
r1. :	-121
r1. @	16
r1. Name	-48
r1. letter	57
r1. one	-136
r1. unit	21
r1. word	26
r2 "	25
r2 #	-21
r2 (	-24
r2 *	-23
r2 -	19
r2 .	20
r2 100	32
r2 12	67
r2 15	22
r2 17	-22
r2 18	-22
r2 2	-39
r2 21	-26
r2 250	42
r2 28	27
r2 34	-15
r2 36	23
r2 41	21
r2 430	-36
r2 450	22
r2 5	-21
r2 6	20
r2 7	-37
r2 74	-25
r2 8	32
r2 :	-85
r2 about	-27
r2 acts	-28
r2 also	-34
r2 an	-24
r2 and	22
r2 are	54
r2 arms	-19
r2 around	-19
r2 ask	40
r2 at	-42
r2 b	-26
r2 back	-27
r2 ballasts	20
r2 bath	-21
r2 be	62
r2 bedroom	-21
r2 behind	21
r2 bent	31
r2 better	25
r2 board	38
r2 bought	30
r2 box	-86
r2 boxes	22
r2 brackets	-17
r2 bust	-23
r2 but	32
r2 buy	16
r2 buzz	23
r2 c	-32
r2 cant	-22
r2 carry	-15
r2 caulk	33
r2 ceiling	-16
r2 center	55
r2 change	-52
r2 changed	16
r2 circus	-27
r2 clear	41
r2 client	-27
r2 close	33
r2 closet	-16
r2 coat	17
r2 code	59
r2 concrete	-23
r2 cr	-19
r2 crack	-27
r2 cracked	106
r2 crown	-36
r2 day	-39
r2 days	-24
r2 deny	-21
r2 didn't	-15
r2 dirt	16
r2 do	83
r2 don't	-18
r2 done	-20
r2 down	-113
r2 drawing	18
r2 each	82
r2 easter	-28
r2 eight	-23
r2 eighteen	-42
r2 eighty	-39
r2 elbow	-16
r2 em	73
r2 epoxy	-35
r2 every	41
r2 everybody	-20
r2 everywhere	-32
r2 extra	-17
r2 faces	-27
r2 fan	-32
r2 far	56
r2 feet	-58
r2 fill	29
r2 filter	22
r2 fine	35
r2 five	-54
r2 floor	-27
r2 fogged	19
r2 foot	20
r2 footers	30
r2 for	51
r2 forward	-38
r2 four	-59
r2 fourteen	69
r2 framed	-36
r2 fridays	-25
r2 from	-26
r2 front	60
r2 furnace	-37
r2 gal	-22
r2 gang	-18
r2 get	-26
r2 glue	-36
r2 go	61
r2 good	16
r2 got	30
r2 grade	18
r2 ground	-21
r2 hair	32
r2 hang	56
r2 hauf	-18
r2 have	27
r2 he	-44
r2 he's	-31
r2 head	35
r2 heads	28
r2 hinges	-45
r2 his	19
r2 hole	-24
r2 hot	61
r2 hour	-31
r2 house	22
r2 hr	-39
r2 hung	19
r2 i	21
r2 i'm	-20
r2 if	-20
r2 inch	46
r2 inside	18
r2 it	20
r2 kitchen	16
r2 later	21
r2 laundry	-20
r2 lift	-22
r2 litre	27
r2 lol	-26
r2 look	-18
r2 louvres	19
r2 medium	-51
r2 midspan	17
r2 mirror	-21
r2 missing	32
r2 monday	-18
r2 morning	-25
r2 must	-18
r2 never	-20
r2 night	-58
r2 nine	-18
r2 nineteen	-43
r2 ninety	21
r2 no	-20
r2 nobody's	-25
r2 noon	-41
r2 nuts	-44
r2 of	-31
r2 oh	-26
r2 ok	23
r2 one	-26
r2 ones	27
r2 open	30
r2 opens	-23
r2 or	19
r2 order	-18
r2 ounce	25
r2 over	36
r2 pad	-19
r2 paint	17
r2 panel	23
r2 past	-29
r2 patch	20
r2 pattern	-34
r2 plaster	18
r2 play	-32
r2 plus	17
r2 point	-38
r2 pop	-21
r2 pops	19
r2 pound	21
r2 primer	36
r2 quarter	48
r2 rail	-18
r2 range	-54
r2 rest	42
r2 ring	40
r2 road	28
r2 rolls	23
r2 row	29
r2 rub	42
r2 run	-17
r2 saturday	-33
r2 set	-30
r2 she	23
r2 she's	21
r2 sheet	-19
r2 shelf	19
r2 shimmed	33
r2 short	33
r2 should	-18
r2 shower	-36
r2 shut	-18
r2 shy	-15
r2 side	34
r2 siding	32
r2 sign	21
r2 signed	-50
r2 single	33
r2 site	50
r2 six	-47
r2 skip	-20
r2 slow	-17
r2 so	-15
r2 somewhere	-15
r2 spraying	25
r2 spring	-19
r2 st	-23
r2 start	-21
r2 started	-34
r2 starting	-22
r2 sticks	-19
r2 still	-55
r2 stool	-33
r2 stop	19
r2 sunday	-36
r2 swap	29
r2 ten	44
r2 tens	17
r2 that	-20
r2 the	52
r2 there's	-25
r2 these	46
r2 they	-18
r2 they've	16
r2 thing	-58
r2 thirty	19
r2 this	43
r2 those	-27
r2 thousand	-25
r2 three	-51
r2 thursday	-27
r2 tighter	33
r2 time	-37
r2 times	20
r2 today	30
r2 told	17
r2 treinta	36
r2 trips	-19
r2 tuesday	-18
r2 twelve	20
r2 twenty	34
r2 two	-25
r2 upstairs	-16
r2 us	-76
r2 used	22
r2 want	33
r2 wants	-21
r2 way	54
r2 ways	28
r2 week	28
r2 weekend	29
r2 were	26
r2 what	53
r2 wires	17
r2 with	-18
r2 won't	21
r2 works	-36
r2 worth	18
r2 x	35
r2 you're	35
r2. "	25
r2. (	-24
r2. *	-23
r2. -	19
r2. -ed	19
r2. -ing	36
r2. -s	-17
r2. .	20
r2. :	-85
r2. Name	-76
r2. letter	21
r2. n't	-23
r2. one	-65
r2. unit	49
r3 %	35
r3 '	-34
r3 10	-18
r3 14	-29
r3 28	-32
r3 3	24
r3 5	43
r3 6	-33
r3 7	41
r3 8	41
r3 90	17
r3 :	-58
r3 ;	-33
r3 a	-60
r3 act	-31
r3 after	-40
r3 again	-28
r3 air	31
r3 an	-24
r3 anodes	33
r3 are	25
r3 ask	-16
r3 at	16
r3 bag	-25
r3 bags	19
r3 bar	17
r3 base	-18
r3 bath	38
r3 bay	24
r3 bears	-21
r3 behind	23
r3 black	56
r3 blinds	-18
r3 blue	-26
r3 board	-53
r3 boards	44
r3 books	-30
r3 bottom	94
r3 box	38
r3 boxes	-21
r3 braille	30
r3 break	-33
r3 broken	32
r3 bronze	25
r3 brought	33
r3 bucket	21
r3 buzzer	-21
r3 cabinet	-18
r3 can	48
r3 cant	-30
r3 carton	29
r3 case	19
r3 cash	-24
r3 cb	-25
r3 centre	18
r3 change	-17
r3 changed	-27
r3 chimney	20
r3 chipped	48
r3 clips	20
r3 clock	-25
r3 close	-35
r3 closet	46
r3 cold	17
r3 color	-47
r3 corner	31
r3 count	56
r3 cover	32
r3 cracked	-37
r3 crew	-70
r3 crown	-29
r3 damaged	23
r3 dash	27
r3 de	26
r3 dead	26
r3 degree	21
r3 discharge	-28
r3 dock	-17
r3 done	-30
r3 door	53
r3 dot	-48
r3 down	20
r3 drawer	-22
r3 driving	-29
r3 dryer	24
r3 dump	52
r3 dumpster	-20
r3 each	-55
r3 edge	48
r3 eggshell	18
r3 either	-21
r3 eleven	-28
r3 ends	49
r3 enough	27
r3 every	-24
r3 falls	-26
r3 far	22
r3 fault	-22
r3 feet	19
r3 field	51
r3 fifteen	23
r3 fifty	16
r3 finish	26
r3 fit	33
r3 fixed	-23
r3 flapper	-36
r3 flashing	48
r3 flat	19
r3 flow's	18
r3 foot	17
r3 for	-49
r3 form	16
r3 forty	-19
r3 front	15
r3 furnace	-21
r3 gang	45
r3 garage	-26
r3 gauge	26
r3 glass	16
r3 go	20
r3 good	-29
r3 got	57
r3 grab	-26
r3 grate	-20
r3 grille	-58
r3 grout	31
r3 guys	-36
r3 hangers	26
r3 has	17
r3 haul	-47
r3 have	18
r3 he	-30
r3 he's	-70
r3 head	-29
r3 heater	40
r3 held	54
r3 her	28
r3 high	27
r3 hinge	20
r3 hinges	-32
r3 hot	-15
r3 hour	26
r3 hours	-25
r3 how	-45
r3 i	-34
r3 i'll	-18
r3 idlers	57
r3 if	-26
r3 in	-25
r3 inch	-29
r3 is	-18
r3 it	45
r3 it's	25
r3 just	-18
r3 kept	-21
r3 kitchen	31
r3 knocked	-24
r3 landing	39
r3 laser	50
r3 late	-27
r3 latest	-22
r3 leave	28
r3 leg	70
r3 length	47
r3 level	19
r3 lift	-39
r3 like	-64
r3 lock	23
r3 long	39
r3 lost	-16
r3 lot	-28
r3 low	17
r3 manifold	18
r3 manual	-31
r3 mate	-21
r3 middle	54
r3 min	-20
r3 minute	-35
r3 minutes	-34
r3 missing	-38
r3 molding	-36
r3 monday	-42
r3 month	31
r3 mosaic	22
r3 moved	-19
r3 nail	-35
r3 need	25
r3 neutral	21
r3 never	-19
r3 new	-45
r3 nineteen	26
r3 nose	46
r3 number	16
r3 off	-32
r3 oh	43
r3 old	-25
r3 on	-16
r3 open	-17
r3 opener	-22
r3 order	23
r3 other	29
r3 ought	28
r3 out	56
r3 outlet	17
r3 packers	-31
r3 painted	37
r3 panel	19
r3 parts	21
r3 plan	49
r3 platform	-18
r3 plenty	21
r3 plumbers	-24
r3 podium	-57
r3 point	33
r3 pool	-50
r3 porch	31
r3 pulled	-21
r3 put	20
r3 quarter	21
r3 radio	-53
r3 raining	-40
r3 ran	43
r3 range	-21
r3 reducers	24
r3 required	-18
r3 reset	-40
r3 right	-36
r3 rod	-16
r3 room	-18
r3 row	-27
r3 run	43
r3 runs	-19
r3 safe	38
r3 safety	-45
r3 saints	-44
r3 sand	21
r3 service	-22
r3 serving	-18
r3 set	26
r3 seven	-28
r3 seventy	23
r3 sheet	24
r3 shelf	18
r3 short	44
r3 shot	-29
r3 side	15
r3 signal	-19
r3 sill	25
r3 sills	16
r3 six	29
r3 sixteen	27
r3 sixty	22
r3 slope	17
r3 so	-20
r3 soft	19
r3 some	20
r3 spare	-17
r3 spring	-19
r3 stay	-24
r3 steep	46
r3 steps	27
r3 still	-39
r3 straps	-19
r3 stripped	28
r3 sunday	-15
r3 take	40
r3 tape	50
r3 ten	-48
r3 than	-19
r3 then	20
r3 thermostat	-45
r3 they	-18
r3 this	-17
r3 three	30
r3 through	-41
r3 tied	50
r3 tile's	30
r3 timesheet	-25
r3 today	-21
r3 together	-35
r3 tomorrow	19
r3 tread	-39
r3 truck	-23
r3 tub	23
r3 tubes	31
r3 tubs	27
r3 twelve	-24
r3 twenty	34
r3 two	-49
r3 type	62
r3 uncles	-16
r3 under	-17
r3 underside	19
r3 up	-38
r3 us	17
r3 use	29
r3 van	20
r3 vent	-16
r3 waste	23
r3 way	50
r3 we	42
r3 we're	19
r3 week	-23
r3 were	22
r3 what	-23
r3 white	-22
r3 wind	-22
r3 wire's	25
r3 with	-20
r3 x	32
r3 y	36
r3 year	-23
r3. %	35
r3. '	-34
r3. -ed	25
r3. -ing	-30
r3. -ly	-33
r3. 1	18
r3. :	-58
r3. ;	-33
r3. Name	-23
r3. n't	-30
r3. one	17
r3. unit	32
rule 	-50
rule eachOf	83
rule pair	168
rule quantity/decimal	35
rule quantity/mixed	49
rule quantity/whole+taken-back	26
rule range	26
size 1	-41
size 20	21
size 60	24
size 99	17
size 9999	-44
size more	-59
strange 0	22
strange 1	-46
strange 2	-26
strange 3	-46
strange 4	-25
talk -1	-33
talk -2.5	-92
talk -5	-108
talk -9	-98
talk 0	-40
talk 1	-39
talk 14	57
talk 20	38
talk 9	73
talk each -1	-76
talk each -2.5	-128
talk each -5	-78
talk each 0	-45
talk each 1	-57
talk each 14	39
talk each 20	80
talk each 9	34
talk each less	-49
unit head 0	-47
unit head 1	-15
unit head none	-27
unit percent	-19
units 0	-49
units 1	65
units 2	36
word head 3	51
£ head none	-43
`;
