/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
" head none	38
# head 0	17
# head 1	45
$ head none	-91
's head 0	-45
's head none	118
( head none	23
+ head none	30
, head 0	25
, head 1	17
, head none	36
- head 0	-23
- head 1	25
- head none	-69
-ed head none	57
-ing head 0	23
-ly head none	60
-s head 0	53
-s head none	40
/ head none	-93
0 l 	-16
0 l at	21
0 l. #	-16
0 l. word	17
0 r to	-20
0 r with	-21
0 r. -s	26
0 r. word	-35
0 words	24
0 words round	-22
1 figures 1	51
1 head 0	18
1 head none	-80
1 l +	18
1 l ,	67
1 l .	27
1 l and	85
1 l another	-85
1 l at	36
1 l bars	24
1 l bath	-36
1 l be	26
1 l big	-56
1 l birds	-16
1 l bottom	-34
1 l bought	60
1 l bring	45
1 l broke	32
1 l buy	57
1 l by	49
1 l crowned	27
1 l cut	-43
1 l each	-38
1 l every	-103
1 l falls	-21
1 l for	-17
1 l found	27
1 l get	82
1 l got	85
1 l grab	34
1 l had	33
1 l hall	50
1 l have	24
1 l her	37
1 l hinges	16
1 l hit	-25
1 l inch	64
1 l is	-36
1 l just	86
1 l last	-70
1 l left	-31
1 l leg	-27
1 l long	-68
1 l longer	-17
1 l lost	57
1 l me	40
1 l mm	-37
1 l nd	-18
1 l need	43
1 l new	-90
1 l no	-25
1 l not	-24
1 l old	-69
1 l on	-19
1 l one	-34
1 l order	24
1 l other	-107
1 l outlets	15
1 l over	-17
1 l plus	46
1 l put	87
1 l reading	24
1 l red	41
1 l right	-31
1 l second	-27
1 l shave	38
1 l side	27
1 l so	22
1 l square	-28
1 l static	17
1 l static's	24
1 l take	-19
1 l that	-87
1 l that's	-19
1 l the	-133
1 l there's	36
1 l this	-27
1 l type	-25
1 l up	27
1 l want	55
1 l was	28
1 l. +	18
1 l. ,	67
1 l. -ing	-30
1 l. -s	-27
1 l. .	27
1 l. letter	-23
1 l. one	-32
1 l. word	-40
1 parts	17
1 r 	31
1 r 
	18
1 r -	-16
1 r .	-46
1 r 3	17
1 r at	-72
1 r belt	-21
1 r bracket	23
1 r by	20
1 r cracked	22
1 r end	-52
1 r exit	21
1 r for	44
1 r gasket	15
1 r hand	-36
1 r has	-24
1 r head	24
1 r here	56
1 r hit	-22
1 r i	-19
1 r is	15
1 r it's	-22
1 r leg	-33
1 r location	45
1 r max	17
1 r missing	16
1 r new	48
1 r obscure	16
1 r of	-239
1 r off	42
1 r out	-22
1 r panel	-50
1 r plinth	18
1 r podium	-17
1 r reads	-29
1 r ring	40
1 r rod	-18
1 r seven	20
1 r shelf	-54
1 r short	-30
1 r side	-27
1 r sink	51
1 r so	-25
1 r spare	52
1 r sprinkler	35
1 r stone	-16
1 r switch	15
1 r three	16
1 r to	-66
1 r towel	19
1 r up	18
1 r was	-25
1 r wednesday	26
1 r. #	31
1 r. 's	-26
1 r. -	-16
1 r. -ed	-21
1 r. -ing	30
1 r. -s	-59
1 r. .	-46
1 r. /	18
1 r. 1	81
1 r. one	45
1 r. word	-41
1 words	-70
12 figures 1	-27
12 l 	53
12 l 
	-31
12 l "	22
12 l :	39
12 l a	22
12 l about	23
12 l all	50
12 l and	16
12 l another	30
12 l apartment	-22
12 l are	24
12 l around	-34
12 l at	-111
12 l b	-22
12 l back	-28
12 l backfill	58
12 l bay	-24
12 l be	-18
12 l been	33
12 l before	-30
12 l between	-19
12 l bottom's	17
12 l bout	35
12 l breaker	-33
12 l brought	35
12 l building	-25
12 l but	41
12 l by	30
12 l can	29
12 l case	29
12 l cat	-20
12 l channel	-24
12 l circuit	-79
12 l code's	-16
12 l correction	15
12 l count	23
12 l cut	42
12 l door	-28
12 l double	-24
12 l drops	17
12 l e	-20
12 l embed	42
12 l end's	-30
12 l every	41
12 l exit	-24
12 l expires	-49
12 l exposure's	57
12 l fault	-23
12 l fell	47
12 l fit	18
12 l fla	17
12 l flat	-24
12 l floor	-53
12 l for	16
12 l four	-27
12 l front	-40
12 l garage	54
12 l get	25
12 l gone	-26
12 l got	82
12 l grab	17
12 l had	-32
12 l has	49
12 l have	16
12 l hit	-17
12 l hole	-64
12 l house	-48
12 l hung	45
12 l hwy	-19
12 l in	19
12 l is	25
12 l it	61
12 l it's	-85
12 l items	-17
12 l its	-16
12 l key	-36
12 l laborer	60
12 l lap	49
12 l last	17
12 l least	57
12 l leaves	51
12 l left	55
12 l like	-32
12 l line	-37
12 l lintel	17
12 l lost	-28
12 l lot	-56
12 l m	-16
12 l meant	20
12 l need	68
12 l needs	25
12 l nine	-20
12 l not	53
12 l note	-30
12 l number	-91
12 l number's	-28
12 l ocean's	-32
12 l of	28
12 l offered	-25
12 l on	-36
12 l order	-17
12 l ought	-17
12 l out	24
12 l over	-26
12 l overhang's	21
12 l owns	-23
12 l past	-56
12 l plus	17
12 l port	-19
12 l poured	17
12 l pulling	23
12 l ran	50
12 l reading	-58
12 l reads	17
12 l replaced	25
12 l reveal's	18
12 l right	-27
12 l riser	-47
12 l rm	-24
12 l rtu	-16
12 l run	40
12 l said	-48
12 l saves	-19
12 l says	33
12 l sent	15
12 l set	-61
12 l sheet	-23
12 l six	22
12 l so	26
12 l solid	-28
12 l stack	17
12 l starter	25
12 l step	-22
12 l subcool	30
12 l superheat's	16
12 l take	29
12 l takes	28
12 l than	42
12 l the	53
12 l then	-21
12 l there's	28
12 l throat's	56
12 l through	-22
12 l til	-42
12 l took	15
12 l tread	-23
12 l truck	-35
12 l under	-18
12 l unit	-88
12 l up	65
12 l us	47
12 l used	17
12 l wants	-26
12 l we're	54
12 l x	47
12 l zone	-27
12 l ×	29
12 l. "	22
12 l. #	53
12 l. 's	36
12 l. -ed	80
12 l. -ing	-31
12 l. -s	34
12 l. /	-31
12 l. :	39
12 l. Name	-39
12 l. one	-42
12 l. unit	-19
12 l. word	-17
12 parts	29
12 r )	-31
12 r ,	19
12 r -	-19
12 r .	35
12 r :	-37
12 r a	20
12 r adds	-24
12 r and	-26
12 r as	-28
12 r b	-40
12 r baby	17
12 r blown	19
12 r boards	16
12 r brg	17
12 r bucks	-18
12 r by	57
12 r cells	33
12 r closed	52
12 r coming	27
12 r creams	-16
12 r crows	-33
12 r dash	-16
12 r dead	29
12 r deep	42
12 r den	33
12 r dentists	-43
12 r done	33
12 r door	-30
12 r doors	48
12 r down	26
12 r drops	21
12 r each	64
12 r eight	-21
12 r end	17
12 r fifty	-21
12 r five	-46
12 r for	41
12 r got	-30
12 r grille	-33
12 r has	-23
12 r heads	27
12 r here	41
12 r high	30
12 r hits	28
12 r hole	-41
12 r homeruns	28
12 r house	-23
12 r i	15
12 r in	-23
12 r instead	24
12 r iron	-30
12 r is	-36
12 r it	-18
12 r last	-29
12 r laundromats	-23
12 r left	57
12 r legs	-35
12 r lights	15
12 r like	36
12 r long	20
12 r love	-29
12 r maple	-31
12 r more	45
12 r needs	-57
12 r no	-29
12 r o'clock	-37
12 r of	54
12 r off	19
12 r on	37
12 r or	-16
12 r out	-91
12 r panel	-37
12 r people	-15
12 r rattle	21
12 r roof	-25
12 r running	18
12 r seeds	-33
12 r sharp	-26
12 r shift	-40
12 r short	68
12 r should	24
12 r shows	-18
12 r six	-40
12 r so	16
12 r something	-40
12 r stops	-16
12 r studs	21
12 r the	24
12 r this	-23
12 r through	-17
12 r till	-21
12 r to	25
12 r tomorrow	17
12 r toward	29
12 r tripped	-16
12 r two	-25
12 r valve	-18
12 r voicemails	-15
12 r wants	-19
12 r was	-23
12 r when	-18
12 r wide	18
12 r work	46
12 r x	16
12 r. )	-31
12 r. ,	19
12 r. -	-19
12 r. -ed	26
12 r. -s	16
12 r. .	35
12 r. :	-37
12 r. Name	-31
12 r. one	-106
12 r. unit	72
12 words	18
12 words round	-24
2 figures 1	-16
2 l 	31
2 l 
	-25
2 l (	21
2 l ,	23
2 l -	-24
2 l adds	37
2 l another	21
2 l around	-22
2 l at	-73
2 l back	23
2 l bath	-52
2 l bay	-57
2 l beam	34
2 l bed	-26
2 l bedroom	-66
2 l bought	17
2 l breaker	-16
2 l bring	44
2 l buy	31
2 l charging	-27
2 l cinco	26
2 l corta	36
2 l count	-40
2 l cover's	41
2 l day	-62
2 l dirt	21
2 l drawer	-45
2 l eyes	-36
2 l flashes	-26
2 l flat	-36
2 l forward	53
2 l fourteen	-31
2 l from	-27
2 l get	20
2 l gets	51
2 l grade's	21
2 l hall	27
2 l homeruns	18
2 l in	-21
2 l is	17
2 l it	25
2 l jumper	-27
2 l just	16
2 l kept	27
2 l landing	28
2 l last	70
2 l leg	-39
2 l low	17
2 l makes	-22
2 l maybe	63
2 l minus	44
2 l missing	17
2 l need	27
2 l number	-54
2 l of	-55
2 l only	-24
2 l order	23
2 l other	19
2 l out	-20
2 l paddock	-16
2 l panel	-51
2 l past	-26
2 l plan	-24
2 l quarter	41
2 l rack	-28
2 l ran	30
2 l replace	15
2 l sags	17
2 l see	33
2 l slope's	32
2 l so	18
2 l strike	-19
2 l swap	34
2 l takes	-54
2 l the	66
2 l then	-36
2 l there's	-64
2 l thing	-49
2 l took	27
2 l type	-26
2 l us	-20
2 l want	28
2 l wants	49
2 l was	40
2 l with	15
2 l zone	-44
2 l. #	31
2 l. 's	41
2 l. (	21
2 l. ,	23
2 l. -	-24
2 l. -ed	20
2 l. /	-25
2 l. 1	16
2 l. one	33
2 l. unit	-55
2 parts	42
2 r 	-20
2 r ,	-19
2 r -	-18
2 r 3	-18
2 r :	-35
2 r advil	-21
2 r after	-36
2 r against	21
2 r and	-18
2 r at	92
2 r bad	17
2 r bars	-19
2 r blinds	31
2 r broken	-17
2 r by	-16
2 r came	24
2 r can	-22
2 r cement	-21
2 r connections	-16
2 r decks	20
2 r don't	36
2 r done	18
2 r doors	36
2 r extras	50
2 r faced	-17
2 r fall	37
2 r fifty	21
2 r five	25
2 r forty	21
2 r gang	-73
2 r guys	-38
2 r had	-19
2 r hall	21
2 r helpers	-33
2 r high	21
2 r hinges	19
2 r homeruns	-33
2 r i	26
2 r if	35
2 r in	30
2 r is	-29
2 r kinds	-26
2 r ladders	17
2 r last	40
2 r lights	-29
2 r man	-26
2 r more	56
2 r new	24
2 r niches	21
2 r o'clock	-22
2 r of	97
2 r one	-44
2 r or	40
2 r out	47
2 r panel	-42
2 r part	-57
2 r proud	22
2 r pulled	32
2 r put	-18
2 r rafters	15
2 r set	-24
2 r shakes	-20
2 r sides	-28
2 r slope	20
2 r so	22
2 r speeds	-18
2 r spots	-22
2 r stage	-35
2 r stakes	16
2 r stars	-24
2 r steps	-37
2 r studs	26
2 r sugars	-18
2 r the	-36
2 r then	-30
2 r there	26
2 r thirty	19
2 r three	-31
2 r to	52
2 r together	-30
2 r under	22
2 r usb	22
2 r ways	-20
2 r were	43
2 r where	22
2 r window	-36
2 r windows	33
2 r wrongs	-36
2 r x	-30
2 r. #	-20
2 r. ,	-19
2 r. -	-18
2 r. -ed	15
2 r. 1	16
2 r. :	-35
2 r. n't	29
2 r. one	50
2 r. word	26
20 figures 2	16
20 l ,	30
20 l -	-26
20 l .	-25
20 l 3	-20
20 l a	73
20 l and	30
20 l at	42
20 l be	36
20 l bogeyed	-22
20 l by	24
20 l ch	-25
20 l ckts	-20
20 l code	-25
20 l cr	-16
20 l cut	19
20 l delta's	44
20 l dowels	20
20 l drew	-30
20 l error	-24
20 l every	59
20 l flat	47
20 l for	-43
20 l front	62
20 l gap's	-32
20 l go	28
20 l got	32
20 l head	18
20 l hearth's	34
20 l house	-31
20 l in	-53
20 l is	39
20 l it	18
20 l item	-17
20 l lad's	-22
20 l maybe	15
20 l me	-27
20 l need	22
20 l on	-22
20 l one	26
20 l packers	-21
20 l pier	-41
20 l plan	37
20 l pulling	16
20 l r	-75
20 l read	16
20 l reading	20
20 l said	27
20 l says	18
20 l seat's	-37
20 l set	44
20 l sheet	-15
20 l so	20
20 l span's	20
20 l sweet	-16
20 l tag	-28
20 l than	-35
20 l that's	-21
20 l the	-20
20 l then	51
20 l to	-47
20 l turning	-18
20 l under	26
20 l used	27
20 l wants	-22
20 l was	-32
20 l your	-48
20 l. ,	30
20 l. -	-26
20 l. -ing	27
20 l. .	-25
20 l. 1	-20
20 l. letter	-68
20 l. one	17
20 l. unit	49
20 l. word	24
20 parts	27
20 r 	24
20 r -	-30
20 r .	36
20 r after	54
20 r at	24
20 r banksia	-20
20 r boards	15
20 r bucks	-46
20 r by	27
20 r c	-37
20 r centers	18
20 r doors	15
20 r down	-78
20 r each	22
20 r even	20
20 r five	-41
20 r going	-30
20 r had	16
20 r heads	17
20 r hot	-25
20 r i	16
20 r ninety	-59
20 r ninth	-23
20 r no	34
20 r oc	22
20 r of	29
20 r off	-44
20 r on	29
20 r one	57
20 r out	33
20 r outta	22
20 r second	-27
20 r since	-28
20 r smokes	-21
20 r so	28
20 r then	-28
20 r times	-19
20 r toilets	34
20 r twelve	-16
20 r two	-33
20 r wafers	22
20 r we	21
20 r with	23
20 r. #	24
20 r. -	-30
20 r. -s	51
20 r. .	36
20 r. letter	16
20 r. one	-118
20 r. word	40
20 words round	-27
5 l 	38
5 l 
	-42
5 l ,	50
5 l :	18
5 l a	-32
5 l about	-32
5 l add	21
5 l after	-36
5 l all	17
5 l and	-27
5 l another	28
5 l apt	-30
5 l at	-59
5 l b	-17
5 l back	28
5 l bay	-33
5 l be	33
5 l bed	-27
5 l bldg	-36
5 l boring	-27
5 l bring	26
5 l brought	44
5 l by	-55
5 l class	-25
5 l code	-43
5 l cover's	16
5 l cut	15
5 l day	-49
5 l den	16
5 l dock	-19
5 l done	26
5 l door	-36
5 l down	40
5 l edge	15
5 l elevator	-21
5 l feeder	-19
5 l finished	-22
5 l five	-20
5 l flashes	-46
5 l flat	-32
5 l foot	24
5 l for	50
5 l found	18
5 l front	25
5 l full	30
5 l g	-18
5 l get	51
5 l gimme	89
5 l got	16
5 l had	16
5 l has	31
5 l have	27
5 l he's	-16
5 l heater	-16
5 l hole's	26
5 l hour's	-51
5 l house	-18
5 l hub	23
5 l is	29
5 l it	71
5 l its	-33
5 l kept	15
5 l kitchen	27
5 l knock	25
5 l ladder	-19
5 l leaves	36
5 l left	38
5 l level	-41
5 l line	-50
5 l loop	-41
5 l lp	-35
5 l lvl	-37
5 l make	18
5 l man's	-35
5 l me	20
5 l mode	-40
5 l necesito	37
5 l need	23
5 l no	-16
5 l not	57
5 l note	-25
5 l nozzle	-35
5 l number	-76
5 l of	-38
5 l on	50
5 l only	69
5 l or	15
5 l other	66
5 l out	51
5 l over	92
5 l p	-35
5 l pan's	17
5 l part	-31
5 l pin	-16
5 l profile's	24
5 l pulled	21
5 l pump	-20
5 l ratio's	46
5 l rolled	-38
5 l room	-48
5 l said	33
5 l says	16
5 l scaff	31
5 l set	21
5 l setting	-19
5 l sheet	-15
5 l shelf	-41
5 l short	67
5 l shot	-22
5 l sister	29
5 l slide	-46
5 l so	16
5 l still	51
5 l strike	-25
5 l switch	-38
5 l take	18
5 l that	24
5 l the	-45
5 l then	-26
5 l there	-18
5 l throw	21
5 l till	-27
5 l took	26
5 l two	-19
5 l type	-25
5 l unit	-41
5 l up	18
5 l us	40
5 l use	19
5 l used	18
5 l wants	33
5 l was	61
5 l zone	-66
5 l. #	31
5 l. ,	50
5 l. -s	74
5 l. /	-51
5 l. :	18
5 l. Name	-44
5 l. letter	-24
5 l. one	-71
5 l. unit	-70
5 r )	-42
5 r -	-30
5 r 2	28
5 r 3	-34
5 r 7	-28
5 r :	-22
5 r a	-17
5 r against	16
5 r and	25
5 r apart	67
5 r apiece	31
5 r at	27
5 r back	39
5 r baths	25
5 r batts	-62
5 r bays	-31
5 r be	22
5 r blade	-58
5 r bricks	-16
5 r broken	22
5 r burner	-52
5 r but	37
5 r by	-32
5 r calls	-15
5 r came	-22
5 r closets	19
5 r corner	22
5 r corridor	-20
5 r crew	-16
5 r d	-15
5 r dimmers	23
5 r doors	-51
5 r dutchmen	25
5 r extra	51
5 r for	25
5 r four	-49
5 r gets	-18
5 r gone	-35
5 r guys	-22
5 r had	-17
5 r hall	16
5 r has	-21
5 r heads	23
5 r high	49
5 r hole	-23
5 r hooks	27
5 r in	63
5 r is	-67
5 r ish	-18
5 r just	59
5 r layers	20
5 r left	58
5 r lift	-28
5 r living	17
5 r loose	22
5 r more	50
5 r not	-20
5 r number	27
5 r o'clock	-48
5 r oclock	-16
5 r of	108
5 r off	25
5 r outlets	18
5 r over	19
5 r parts	53
5 r per	56
5 r ready	-19
5 r receps	18
5 r refused	-27
5 r ring	-28
5 r says	-15
5 r screens	44
5 r shingles	-25
5 r should	24
5 r spaces	31
5 r square	-42
5 r stars	-18
5 r still	66
5 r strikes	-38
5 r ten	26
5 r the	-83
5 r then	-31
5 r they	33
5 r thick	24
5 r things	-17
5 r times	-64
5 r today	-31
5 r tomorrow	-43
5 r tries	59
5 r tripped	-22
5 r under	-22
5 r walls	17
5 r way	-62
5 r went	28
5 r where	15
5 r will	49
5 r windows	17
5 r with	-51
5 r x	27
5 r. 's	-16
5 r. )	-42
5 r. -	-30
5 r. -ing	25
5 r. -s	41
5 r. :	-22
5 r. n't	-26
5 r. one	-38
60 figures 2	23
60 l 	-21
60 l $	-32
60 l -	-58
60 l a	37
60 l about	-24
60 l around	56
60 l at	67
60 l be	18
60 l bin	-37
60 l breaker	-22
60 l bus	-22
60 l cold's	37
60 l cover	17
60 l do	-19
60 l door	26
60 l dynamic	21
60 l error	-24
60 l every	54
60 l had	-43
60 l he's	-88
60 l height's	19
60 l house	70
60 l im	-24
60 l in	-29
60 l is	56
60 l it	-34
60 l left	-30
60 l limit's	-31
60 l lot	-20
60 l measure	-35
60 l meter's	15
60 l need	20
60 l net	-40
60 l not	45
60 l number	-59
60 l of	16
60 l off	-18
60 l on	-18
60 l ones	40
60 l out	25
60 l plate	26
60 l po	-16
60 l r	-24
60 l reading	21
60 l rule	-25
60 l say	25
60 l says	27
60 l sch	-51
60 l set	42
60 l sixty	-16
60 l slip	-17
60 l studio	-25
60 l talks	-37
60 l through	30
60 l to	24
60 l top	-23
60 l turned	-18
60 l up	-55
60 l vanity	19
60 l vikings	-22
60 l with	40
60 l x	31
60 l. #	-21
60 l. $	-32
60 l. 's	40
60 l. -	-58
60 l. -ing	37
60 l. one	-24
60 l. unit	56
60 l. word	31
60 parts	15
60 r -	15
60 r .	40
60 r 2	19
60 r 50	-27
60 r :	-22
60 r a	26
60 r across	20
60 r again	-16
60 r all	28
60 r an	-35
60 r at	39
60 r batts	-25
60 r blades	28
60 r boards	15
60 r both	26
60 r bucks	-39
60 r down	75
60 r fifty	-46
60 r flat	16
60 r for	-29
60 r forty	-34
60 r front	42
60 r going	-61
60 r high	25
60 r is	-53
60 r modules	21
60 r no	-25
60 r nothing	-27
60 r now	-25
60 r oc	25
60 r of	30
60 r off	-23
60 r on	-70
60 r or	-27
60 r packers	-22
60 r right	-22
60 r second	-41
60 r seven	-21
60 r should	29
60 r so	39
60 r space	17
60 r square	30
60 r that	16
60 r the	-18
60 r then	39
60 r there	-31
60 r thick	16
60 r three	34
60 r to	15
60 r voices	-26
60 r wide	26
60 r x	29
60 r. 's	16
60 r. -	15
60 r. -s	-24
60 r. .	40
60 r. /	18
60 r. :	-22
60 r. letter	32
60 r. one	-89
60 r. word	50
60 words	26
99 figures 2	26
99 l 	-20
99 l $	-34
99 l -	24
99 l a	-19
99 l about	18
99 l an	-54
99 l are	-28
99 l at	50
99 l by	20
99 l for	-16
99 l got	-26
99 l headroom's	25
99 l height	41
99 l him	23
99 l humidity's	29
99 l in	-16
99 l it	-17
99 l job	-27
99 l not	-35
99 l of	-33
99 l only	17
99 l over	-23
99 l past	47
99 l psalm	-25
99 l rh	17
99 l roughly	33
99 l says	-35
99 l she's	-48
99 l sixteen	-19
99 l square	-16
99 l static	45
99 l temp	21
99 l that	-33
99 l the	-17
99 l to	40
99 l under	52
99 l was	30
99 l we're	-20
99 l with	-19
99 l. #	-20
99 l. $	-34
99 l. 's	22
99 l. -	24
99 l. -ing	30
99 l. -ly	45
99 l. -s	-28
99 l. one	-60
99 l. unit	-34
99 l. word	23
99 parts	-16
99 r ,	39
99 r -	21
99 r a	-29
99 r an	-16
99 r and	-33
99 r bucks	-35
99 r by	15
99 r dynamic	23
99 r flowing	24
99 r is	-26
99 r lower	17
99 r next	-24
99 r out	43
99 r panhead	-28
99 r problems	-21
99 r rough	23
99 r so	32
99 r we're	-50
99 r. ,	39
99 r. -	21
99 r. -ing	24
99 r. -s	-29
99 r. one	-17
99 r. unit	-23
999 0figures 4	-49
999 l 	-23
999 l $	-24
999 l ,	-20
999 l a	-19
999 l about	49
999 l amp	30
999 l and	76
999 l at	27
999 l count's	16
999 l drawing	-18
999 l every	25
999 l exit	-16
999 l extension's	-35
999 l for	25
999 l from	23
999 l go	-30
999 l going	45
999 l good	-18
999 l had	-22
999 l in	-48
999 l interpass	24
999 l invert's	37
999 l it	-28
999 l kid's	-28
999 l knocked	-24
999 l laid	29
999 l leg	49
999 l limit's	54
999 l neutral's	23
999 l no	43
999 l nobody's	-51
999 l not	-15
999 l number's	-60
999 l one	-26
999 l out	46
999 l panel's	15
999 l pressure's	-41
999 l put	-39
999 l reading	28
999 l reads	28
999 l recirc	48
999 l rise	59
999 l riser	31
999 l rm	-40
999 l room	-44
999 l section	-29
999 l set	20
999 l shows	20
999 l since	-23
999 l spacing	22
999 l suction's	16
999 l suite	-32
999 l the	-86
999 l there	-33
999 l those	20
999 l to	29
999 l two	33
999 l two's	26
999 l voltage	70
999 l volts	28
999 l wall's	20
999 l wants	20
999 l was	-41
999 l. #	-23
999 l. $	-24
999 l. 's	37
999 l. ,	-20
999 l. -ed	-22
999 l. -ing	40
999 l. -s	69
999 l. 1	-27
999 l. unit	-30
999 oh	-45
999 parts	23
999 r ,	26
999 r -	-35
999 r .	28
999 r 555	-17
999 r :	-15
999 r a	-40
999 r above	29
999 r already	-35
999 r and	22
999 r area	-33
999 r base	39
999 r before	-17
999 r block	-28
999 r bucks	-27
999 r by	21
999 r centres	22
999 r common	41
999 r deep	16
999 r double	-27
999 r down	28
999 r end	20
999 r every	-29
999 r fives	-17
999 r for	-47
999 r give	42
999 r going	71
999 r he'll	-22
999 r head's	16
999 r high	33
999 r hinge	-18
999 r i	31
999 r limiter	41
999 r max	23
999 r more	17
999 r net	-45
999 r not	34
999 r number	-20
999 r of	74
999 r off	16
999 r one	18
999 r over	-52
999 r return's	24
999 r so	-35
999 r the	30
999 r to	32
999 r today	25
999 r two	-15
999 r wire	-23
999 r x	15
999 r. 's	43
999 r. ,	26
999 r. -	-35
999 r. -s	-16
999 r. .	28
999 r. 1	-43
999 r. :	-15
999 r. Name	-23
999 r. letter	49
999 r. unit	-33
999 r. word	26
999 words	37
999 words round	36
9999 figures 4	-66
9999 figures 5	-20
9999 l 	-23
9999 l ,	-30
9999 l asking	-19
9999 l at	99
9999 l bath's	21
9999 l by	-18
9999 l ceiling's	20
9999 l deductible's	-33
9999 l for	-20
9999 l from	-33
9999 l had	54
9999 l hundred	-23
9999 l is	-45
9999 l job's	-25
9999 l lintel's	29
9999 l the	-23
9999 l to	20
9999 l want	-37
9999 l was	48
9999 l x	39
9999 l. #	-23
9999 l. 's	26
9999 l. ,	-30
9999 l. -ing	-21
9999 l. letter	39
9999 l. one	-23
9999 l. word	-16
9999 r already	-17
9999 r in	-34
9999 r it'll	-33
9999 r long	33
9999 r maple	-24
9999 r off	20
9999 r on	29
9999 r side	-15
9999 r the	16
9999 r to	37
9999 r today	-16
9999 r. unit	-38
9999 r. word	-18
9999 words	-19
9999 words round	39
: head 0	29
: head none	32
@ head none	19
Name head none	-97
a a	-43
a aa	20
a about	-53
a above	26
a across	25
a act	-31
a acts	-28
a adds	-27
a adjustable	22
a advil	-21
a after	-21
a again	-52
a against	36
a ain't	23
a alarm	-19
a alder	-20
a all	-64
a along	21
a already	-24
a also	33
a am	-18
a amp	-18
a an	-88
a anchors	21
a and	47
a anodes	34
a another	-31
a anything	32
a apart	75
a apiece	31
a are	31
a area	-17
a argue	-20
a arms	-19
a around	-15
a as	-44
a ask	-36
a at	15
a away	-30
a b	-41
a back	41
a backs	-17
a bad	21
a bag	17
a bales	-64
a ballasts	29
a balusters	-27
a banksia	-30
a base	41
a bases	-16
a basket	-40
a bath	45
a bathroom	-41
a baths	30
a batts	-69
a be	51
a bears	-19
a bedroom	-23
a before	-17
a behind	30
a below	15
a bends	21
a bent	16
a bifolds	26
a birch	-38
a black	52
a blade	-20
a blades	29
a blank	16
a blanks	26
a blew	-36
a blinds	19
a blocks	62
a blown	-22
a blue	-61
a boards	77
a bolt	19
a bone	-16
a books	-30
a boot	-20
a boots	-27
a both	35
a bottom	56
a bought	48
a boxes	16
a bracket	17
a braille	29
a brass	57
a break	-16
a brg	17
a bridge	-59
a bring	25
a broken	27
a bronze	34
a brought	25
a brown	16
a bucks	-71
a built	-35
a burned	29
a burner	-52
a bushing	24
a business	-26
a bust	-24
a but	72
a buzz	24
a buzzer	-28
a buzzes	-16
a by	35
a bye	-28
a c	-41
a cable	-57
a call	-34
a calling	-28
a came	25
a can	56
a can't	-29
a cans	36
a cant	-50
a caps	16
a car	-16
a carry	-45
a case	29
a cash	-26
a casing	23
a caulk	25
a cb	-25
a ceiling	27
a cells	34
a center	56
a centers	50
a centimeter	24
a centre	24
a centres	24
a chance	-17
a change	-36
a check	38
a chimney	23
a chipped	49
a chippy	-49
a circuit	16
a circus	-31
a city	-19
a clamps	22
a clear	87
a client	-26
a clips	50
a clock	-25
a closed	47
a closet	34
a cm	-22
a coats	-18
a code	41
a coffee	-16
a color	-40
a come	-19
a comes	-24
a coming	56
a common	32
a complete	-35
a concrete	-41
a connections	-16
a contact	16
a corbels	-16
a cord	-18
a corner	52
a corners	16
a could	-22
a count	59
a country	-40
a crack	-38
a cracked	84
a creams	-16
a crew	-90
a crows	-33
a damaged	37
a dash	20
a day	-77
a days	-39
a de	66
a dead	22
a deck	-22
a decks	49
a deep	81
a degree	24
a degrees	-18
a dehu	26
a den	17
a dentists	-94
a deny	-25
a desk	34
a dimmers	17
a dirt	17
a discharge	-26
a disposal	-48
a do	21
a doce	66
a dock	-26
a dollar	-47
a dollars	-21
a don't	-28
a done	-19
a dos	37
a dot	-46
a down	-47
a dozen	-68
a drawer	-32
a drawing	21
a drew	-36
a drip	29
a driveway	-16
a driving	-26
a drop	24
a drops	20
a dryer	-25
a dump	51
a dumpster	-19
a dutchmen	25
a dynamic	23
a each	95
a easter	-28
a edge	48
a eggshell	33
a eights	20
a either	-28
a elbows	34
a eleven	-22
a eleventh	-50
a elm	-29
a elsewhere	20
a em	63
a emer	26
a ends	48
a euro	-85
a even	60
a every	62
a everybody	-38
a everywhere	-29
a except	32
a extra	46
a extras	50
a faced	-16
a faces	-30
a factory	16
a fair	-20
a fall	31
a falls	-30
a fan	-18
a far	78
a faucet	-19
a fault	-32
a feed	-29
a feet	-31
a few	24
a field	53
a fill	32
a filter	28
a find	-35
a fine	34
a fingers	-26
a fire	-18
a firebrick	41
a fit	46
a fix	-67
a fixed	-30
a flapper	-59
a flashing	36
a flat	45
a flex	-31
a flicker	36
a flow's	18
a flowing	34
a foam	-46
a fogged	28
a foot	52
a footer	15
a footers	43
a for	24
a form	29
a forty	-29
a forward	-37
a four	-30
a fourteen	61
a framed	-48
a fridays	-27
a front	39
a frost	-19
a ft	-33
a furnace	-50
a g	29
a gal	-20
a gallon	-27
a game	-35
a gang	-56
a gary	18
a gasket	20
a gaskets	16
a gate	-41
a gauge	25
a get	-34
a gets	-26
a give	63
a glass	41
a glue	-34
a glued	-23
a go	64
a goat	-24
a goes	-21
a gone	-54
a gonna	18
a good	59
a grab	-16
a grade	36
a grate	-41
a grease	-19
a grille	-91
a grit	24
a ground	-31
a grout	50
a gun	-22
a guy	-29
a guys	-71
a had	-22
a haggles	-23
a hair	31
a hall	93
a hand	-20
a handle	-63
a hang	33
a hangers	69
a has	-94
a hauf	-19
a haul	-69
a have	29
a he	-77
a he's	-90
a head	-67
a head's	16
a heads	79
a heater	31
a heave	-23
a height	26
a helpers	-33
a here	25
a high	120
a him	-58
a hinges	-37
a hire	-21
a hit	-29
a hole	-70
a hooks	20
a hot	21
a hours	-30
a house	18
a how	-20
a hr	-63
a hums	-58
a hundred	35
a hundreds	-24
a hung	-19
a hydro	-34
a i	-44
a i've	18
a id	-33
a idlers	57
a if	-20
a in	15
a inches	19
a inside	-23
a instead	32
a iron	-43
a is	-37
a ish	-23
a it	-34
a it'll	-33
a it's	-75
a joint	22
a juniper	-27
a just	28
a keep	21
a key	-46
a kid	-20
a kinds	-37
a kit	26
a kitchen	17
a knocked	-23
a l	30
a label	-17
a labeled	22
a ladder	-38
a ladders	18
a lady	16
a laid	23
a lamp	24
a landing	49
a larch	-19
a laser	48
a last	25
a late	-36
a later	18
a latest	-32
a laundromats	-23
a lawsuit	-29
a lay	30
a layer	-74
a layers	20
a layout	24
a leave	23
a left	45
a leg	57
a legs	38
a length	33
a let	-18
a lid	19
a lift	-66
a light	25
a lights	-23
a like	-57
a lime	45
a limiter	41
a linear	20
a litre	27
a live	17
a living	25
a ln	-18
a load	-16
a loaded	-29
a location	45
a lol	-60
a long	114
a longer	18
a look	-34
a lot	-50
a louvres	19
a love	-29
a low	17
a lower	22
a lunch	-32
a mailbox	-32
a main	-24
a make	-39
a man	-40
a manifold	16
a manual	-32
a maple	-53
a masons	-16
a match	24
a mate	-36
a matt	26
a max	66
a me	-24
a medium	-52
a meter	30
a metres	20
a middle	53
a midspan	17
a mill	-16
a minimum	24
a minute	-39
a minutes	-36
a mm	22
a modules	21
a molding	-33
a monday	-27
a month	24
a more	98
a morning	-66
a mosaic	-20
a move	22
a moved	-67
a moves	-23
a muppet	-15
a n	101
a nails	25
a nap	17
a need	39
a needs	-68
a net	-45
a never	-33
a new	-17
a next	-32
a niches	21
a night	-66
a nine	-35
a nineteen	-15
a ninth	-25
a no	-32
a nobody's	-20
a noon	-42
a north	29
a nos	22
a nose	47
a not	-44
a nothing	-32
a nozzle	24
a nuts	18
a o	-16
a o'clock	-81
a obscure	16
a oc	46
a oclock	-28
a of	24
a office	-43
a offset	-22
a oh	-17
a ok	-21
a old	50
a one	-18
a ones	28
a open	22
a opener	-20
a opening	54
a opens	-27
a order	53
a ordered	29
a ought	36
a ounce	26
a out	-37
a outlets	35
a outside	-20
a over	36
a pack	-16
a packers	-60
a paint	16
a painted	29
a painters	-19
a pan	24
a panel	-83
a panels	23
a panhead	-28
a park	-20
a part	-57
a parts	73
a pascals	16
a pass	-24
a past	-84
a pattern	-73
a pavers	17
a people	-17
a per	59
a picked	19
a piers	26
a pies	62
a pine	38
a plan	43
a plate	36
a plates	41
a platform	-18
a platforms	58
a play	-31
a please	24
a plenty	55
a plinth	26
a plug	-25
a plumber	-19
a plumbers	-27
a plus	-19
a plywood	27
a pm	-28
a pocket	31
a podium	-70
a pole	-18
a pool	-50
a pop	-21
a pops	18
a porch	16
a power	-21
a pressure	22
a primer	31
a problems	-21
a proud	16
a punch	-18
a put	-29
a quart	26
a quid	-27
a quiet	-22
a quit	-35
a rack	20
a radiator	19
a radio	-104
a rafters	15
a raining	-39
a raise	46
a ran	39
a rang	-22
a range	-75
a rattle	21
a read	18
a ready	-49
a rear	-18
a receps	16
a receptacle	18
a receptacles	23
a recirc	33
a reducer	26
a reducers	34
a refused	-27
a remain	15
a replaced	-22
a required	-28
a reset	-30
a rest	20
a return's	33
a rhythm	-63
a right	-29
a ring	43
a rise	16
a road	28
a roof	-30
a room	26
a ropings	-24
a rub	44
a rubber	23
a run	26
a running	44
a runs	-17
a safe	38
a safety	-46
a sags	-16
a said	-55
a saints	-45
a same	-15
a sand	28
a satin	20
a saying	-19
a says	-34
a scale	-15
a school	-15
a screen	27
a screens	38
a sealed	27
a second	-24
a seeds	-33
a serving	-17
a set	-18
a seventh	-17
a seventy	25
a shakes	-18
a sharp	-38
a she	28
a she's	-18
a shed	29
a sheet	18
a sheets	22
a shelves	-25
a shift	-43
a shimmed	35
a shims	25
a shingles	-20
a short	91
a should	65
a shower	-36
a shows	-24
a shut	-22
a shy	-15
a side	35
a sides	-16
a siding	33
a signal	-18
a signed	-50
a silicone	-35
a sill	28
a sills	17
a since	-17
a sink	30
a sixes	-20
a sixteen	104
a sixty	-25
a skip	-21
a slats	-30
a slope	57
a slow	-48
a smells	-15
a smokes	-21
a so	48
a sockets	-24
a some	31
a something	-27
a sorry	-28
a space	19
a spacer	-26
a spaces	31
a spare	38
a spares	34
a speeds	-18
a spots	-30
a spout	17
a spraying	23
a spring	-42
a sprinkler	20
a square	-33
a st	-32
a stage	-35
a stair	-17
a stakes	16
a stars	-41
a start	-16
a started	-34
a starting	-21
a stay	-36
a steep	47
a step	-42
a steps	-15
a still	-39
a stock	25
a stone	-22
a stool	-42
a stops	-17
a straight	-28
a straps	17
a strikes	-51
a strings	36
a stud	19
a studs	83
a style	15
a subcool	33
a sugars	-26
a summer	-16
a sunday	-53
a superheat's	19
a supplier	-18
a supply	40
a sure	-16
a swap	17
a swapped	-32
a sweep	21
a switch	46
a tag	-19
a take	45
a tall	35
a tap	30
a tape	40
a taped	20
a tempered	24
a template	-16
a tens	15
a that	-36
a their	-19
a then	-32
a theres	17
a these	49
a they	-24
a they're	33
a they've	17
a thick	39
a thing	-104
a things	-28
a thirteen	25
a this	-59
a those	-19
a thousand	-30
a through	-24
a throughout	19
a thursday	-25
a tied	38
a ties	-18
a tighter	34
a til	-15
a tile	16
a tile's	45
a tiles	19
a time	-27
a times	-95
a timesheet	-25
a tip	-21
a to	42
a toe	-24
a together	-68
a toilet	27
a toilets	35
a tonight	19
a too	-38
a took	-22
a torn	-23
a torqued	-16
a total	38
a touch	-17
a towel	23
a travelers	-24
a tread	-40
a treinta	36
a tries	55
a tripped	-35
a trips	-20
a truck	26
a tub	18
a tube	42
a tubs	27
a tuesday	-40
a turned	-31
a turns	18
a two	25
a twos	25
a type	87
a u	-25
a uncles	-16
a under	-21
a underside	19
a unit	-26
a until	33
a up	16
a us	-71
a usb	24
a use	17
a used	48
a v	-38
a vanity	-28
a vent	17
a vinyl	15
a voicemails	-15
a voices	-26
a wafers	22
a walk	-18
a wall	46
a walls	35
a want	47
a was	-27
a washer	-22
a waste	44
a water	-53
a watt	35
a wax	-32
a way	-32
a ways	-17
a we	25
a wednesday	27
a weekend	49
a were	21
a what	21
a whatever	-39
a where	39
a which	35
a while	29
a white	23
a who	-17
a wi	-19
a will	53
a wind	-21
a window	-55
a windows	29
a wiped	-28
a wire	-21
a wire's	24
a wires	17
a woman	-15
a wood	-30
a work	37
a works	-27
a worth	-15
a would	-23
a wouldn't	-122
a wrongs	-36
a x	67
a y	37
a yard	-91
a year	-34
a yesterday	19
a yet	-28
a you	-27
a you're	33
a zero	-16
a zip	-50
b a	-42
b about	23
b above	26
b absent	-47
b acid	-34
b across	28
b acts	-36
b add	76
b address	-16
b adds	37
b adhesive	19
b again	-32
b against	46
b air	29
b aisle	-16
b alarm	-28
b alarm's	-23
b allow	92
b alone	-27
b already	30
b alright	-18
b am	-20
b amp	79
b amps	92
b an	-41
b anchors	15
b and	18
b another	-27
b any	23
b anybody	15
b anything	33
b apart	61
b apiece	35
b apprentice	-52
b apt	-47
b aquastat	36
b architect	44
b are	74
b area	-18
b arm	-21
b around	-33
b arrived	41
b as	32
b ask	-16
b asked	32
b asking	-19
b attic	-17
b away	20
b b	-62
b back	-20
b backfill	58
b badge	-57
b bags	15
b bakkie	-18
b bar	41
b bars	30
b basement	-48
b basin's	26
b batten	26
b battery's	-49
b bay	-58
b bays	-72
b bead	17
b beam	18
b bearing	-21
b bearings	57
b because	44
b bed	-46
b bedroom	-58
b bedrooms	-27
b before	-35
b belts	18
b beltway	-84
b bench	31
b bent	31
b bet	-23
b better	27
b between	-67
b bid	-46
b big	-77
b billed	-23
b bin	-36
b birdied	-24
b birds	-16
b bit	-15
b black	39
b blacks	-32
b blast	24
b bldg	-39
b blinds	19
b blood	-75
b blow	46
b blower	26
b blown	-21
b board's	-16
b boards	38
b bogeyed	-22
b bolts	43
b bond's	-21
b book	17
b booked	-37
b boring	-27
b boss	-38
b both	-33
b bottom's	17
b bought	51
b bout	35
b box	-17
b bracket	-27
b bracket's	-33
b brackets	35
b breaker	-57
b breaker's	57
b breakers	38
b bring	114
b bringing	32
b broke	107
b bronze	16
b brought	82
b brushed	-20
b bucket	-16
b building	-34
b built	-28
b bulb	24
b bump	29
b bundles	85
b bunnings	-18
b burned	39
b bus	-25
b busted	-33
b but	32
b buy	64
b buzz	60
b by	-20
b cable	16
b call	40
b calls	33
b cam	-52
b came	89
b camera	-25
b can	24
b can't	-25
b cans	24
b capacitor's	19
b caps	23
b card	15
b carpet	-21
b carton	20
b cases	28
b casing	-24
b cat	-20
b caulk	-30
b cause	23
b ceiling's	20
b cell	-28
b center	34
b cfm	47
b ch	-36
b changed	45
b channel	-51
b charge	-43
b charged	-56
b charging	-27
b chelsea	-15
b chimney	-30
b chlorine's	53
b choir's	-41
b cinco	32
b circuit	-79
b ckts	-45
b claim's	-26
b class	-38
b cleaned	30
b cleanouts	16
b clearance	16
b clips	35
b close	42
b closer	33
b closes	-43
b coat	-29
b code	-44
b code's	-55
b cold	36
b cold's	37
b collar	29
b color	-24
b colour	-26
b column	-39
b compacted	29
b compaction's	23
b control	38
b corner	47
b correction	15
b corta	73
b count's	40
b counted	-42
b counter	-69
b counter's	44
b counts	46
b cover	45
b cover's	69
b covers	18
b cr	-17
b cracked	46
b crane's	-33
b crowned	27
b curb's	30
b curtain's	-23
b curve	23
b customer	-27
b cut	103
b damper	19
b dash	-32
b date	-19
b dates	-18
b day	-66
b days	37
b deal	-40
b deck	21
b deductible's	-33
b deep	20
b degrees	19
b delta's	44
b den	48
b desk	-43
b detail	-16
b diagonals	84
b dialed	22
b didn't	-22
b digits	-58
b dimmers	58
b dining	-19
b dip	-32
b dirt	30
b dispenser	20
b display	-64
b do	-54
b doc	-17
b dock	-19
b doing	-57
b don't	-43
b door	-65
b doors	-34
b dos	45
b double	-31
b dowel	32
b dowels	20
b down	42
b draft's	49
b draw	30
b drawer	-55
b drawing	17
b draws	29
b drew	-34
b drop	69
b drop's	16
b drops	40
b drove	18
b dry	60
b dryer	-20
b drywall	-48
b drywall's	28
b dump	18
b dumpsters	42
b dynamic	21
b e	-22
b each	64
b east	-20
b edge	37
b egress	-21
b eight	19
b eighteen	23
b eighth	22
b eighths	60
b elbows	23
b electrician	-26
b elevation	-25
b elevator	-81
b em	-34
b embed	42
b emt	22
b end	34
b end's	-36
b ended	38
b ends	-36
b entry	-19
b epoxy	-37
b error	-50
b every	20
b exam	-26
b except	21
b exit	-53
b expansion	16
b expires	-87
b exposure's	57
b extension	-22
b extension's	-35
b exterior	-45
b eyes	-36
b fall's	19
b falls	-40
b far	27
b fault	-21
b feeder	-18
b feeder's	-15
b feeding	20
b feeds	-18
b feet	28
b fell	50
b field	-28
b fifteen	70
b figure	41
b filter	21
b final	-18
b finished	-20
b first	47
b fitted	-20
b fix	-26
b fla	17
b flange	19
b flashes	-103
b flat	-49
b flew	-15
b flight	-61
b flights	-21
b floor	-30
b floor's	19
b flowing	55
b flue	30
b foot	21
b footer	-25
b footers	20
b footing's	29
b footy's	-18
b for	-15
b form	29
b forty	15
b found	51
b four	32
b fourteen	48
b fourth	-56
b framing	-24
b friday	-25
b from	-18
b front	36
b ft	27
b g	-36
b gallons	-47
b game	-17
b gap	21
b gap's	-24
b garage	67
b gas	-58
b gasket	16
b gate	-89
b gates	26
b gauge	36
b gauged	20
b gave	55
b generator	58
b get	69
b gets	76
b gimme	90
b give	-48
b gives	-35
b glue	31
b go	20
b goal	-31
b goin	-18
b good	19
b got	22
b gotta	25
b gr	38
b grab	34
b grabbed	17
b grade's	19
b gray	-32
b green	-32
b grille	17
b grit	36
b grout's	59
b gutter's	-24
b guy	26
b guys	-29
b half	27
b hall	40
b hallway	17
b handrail's	32
b hangers	32
b hank	-23
b happy	-88
b hardware	-42
b has	57
b hatch	-37
b haul	-65
b have	38
b he	-100
b he'll	-26
b he's	-177
b head	53
b head's	35
b header	40
b header's	44
b headroom's	37
b hearth's	34
b heater	-18
b height	41
b height's	30
b held	37
b her	21
b here	-47
b hes	-54
b high	60
b him	-66
b hinge	18
b hinges	-43
b his	-65
b hit	-40
b hits	25
b hockey	17
b hole	-36
b hole's	63
b holes	20
b holiday	-16
b hood	17
b hook's	19
b hour	-53
b hour's	-95
b hours	-45
b house	-16
b how	30
b hub	24
b humidity	56
b humidity's	35
b hundred	39
b hung	58
b hwy	-35
b i	21
b i'd	32
b if	41
b im	-63
b in	-41
b inch	46
b inches	26
b inlet's	30
b innings	-18
b inside	37
b inspector	-54
b install	-28
b instead	20
b interpass	24
b invert's	37
b invoice	-46
b ipad's	-35
b island	45
b it	26
b it'll	21
b it's	-58
b item	-34
b items	-36
b its	-22
b j	25
b jack's	17
b jan	21
b job	-46
b job's	-25
b joint	-17
b joists	40
b jumper	-84
b just	103
b k	-19
b kangaroos	-16
b keep	55
b kept	27
b key	-59
b keyed	-38
b keys	-43
b kick	26
b kicks	109
b kid	-42
b kid's	-32
b kids	68
b kind	35
b kit	18
b kitchen	52
b kits	21
b knees	-29
b knocked	-25
b knots	33
b kpa	41
b l	18
b l1	-20
b l2	-22
b laborer	21
b lad's	-22
b ladder	-16
b ladder's	-21
b laid	42
b landing	29
b lands	-48
b lap	109
b last	16
b lb	31
b least	64
b leaves	83
b led	21
b left	30
b leg	74
b less	37
b let	-22
b level	-80
b lifted	37
b light	-20
b lights	43
b lime	21
b limit's	32
b line	-48
b lintel	21
b lintel's	29
b litres	24
b little	-25
b load's	-25
b loads	-18
b lockbox	-17
b locked	-28
b locker	-17
b log	-15
b lol	-17
b long	-76
b longer	-17
b look	-41
b loop	-39
b loose	41
b lost	22
b lot	-101
b lounge	48
b low	55
b lp	-35
b lp2	-45
b lumber	-19
b lumber's	-40
b lunch	-20
b lvl's	42
b m	-47
b made	-41
b make	95
b makes	-18
b man	-23
b man's	-35
b marble	22
b mark	-44
b marked	-39
b married	-18
b materials	-50
b max	31
b maximum	36
b maybe	43
b mc	18
b me	31
b mean	-20
b meant	18
b measure	-28
b measured	22
b measures	-25
b medallion	20
b medium	50
b meeting	-19
b meter	36
b meter's	15
b metered	25
b metres	15
b mil	22
b mile	-23
b mils	20
b min	15
b minus	29
b minute	21
b minutes	-26
b mirror	30
b mirror's	26
b missing	35
b mix	59
b mixed	42
b mm	35
b mock	-19
b mode	-40
b model	-15
b modules	23
b moisture	79
b moisture's	40
b mon	-40
b moon	-15
b more	39
b morning	44
b move	30
b moved	-88
b mrs	-34
b mud	-36
b must	34
b my	-77
b nail	33
b nailed	21
b nails	29
b near	-22
b necesito	66
b need	102
b needs	75
b net	-40
b neutral's	23
b new	-22
b next	-54
b nine	-25
b nineteen	-56
b nineteen's	28
b ninth	-23
b no	39
b nobody	-47
b nobody's	-51
b none	40
b north	21
b note	-53
b nothing	55
b now	73
b nozzle	-35
b number	-153
b number's	-96
b nursery	20
b ocean's	-32
b of	50
b off	-25
b offered	-73
b office	-33
b offset	20
b oh	-50
b ohm	36
b ohms	57
b oil	-38
b okay	-39
b old	-46
b ones	28
b only	85
b opening	33
b opening's	23
b opens	-35
b or	-28
b ordered	58
b ot	-20
b ought	16
b our	-52
b out	27
b outta	-15
b oven	19
b overhang's	21
b owe	-26
b owes	-19
b owner	-18
b owns	-23
b p	-49
b pack	-54
b packed	27
b packers	-21
b packs	75
b pad	25
b paddock	-16
b padlock's	-29
b page	-26
b paid	-26
b paint	-30
b paint's	-16
b painted	-35
b pan's	18
b panel	-16
b panel's	17
b paper	-29
b par	-16
b parked	-15
b parks	-22
b part	-51
b parts	20
b passed	-29
b past	-36
b patch	24
b pavers	26
b pay	-18
b pcs	-60
b percent	30
b permit	-29
b ph	21
b phase	-22
b phone	-32
b phone's	-32
b pick	44
b pickets	106
b pieces	30
b pier	-39
b pies	-23
b pin	-81
b pipe	47
b pipe's	16
b pitch	23
b pitched	-20
b place	-32
b plan	20
b plans	61
b plant	21
b plastic	-22
b plates	20
b please	49
b plinth	33
b plot	-17
b plus	66
b po	-39
b point	-56
b pole	-29
b poly	-21
b pool	-26
b popped	-38
b port	-19
b pounds	49
b pour	-31
b poured	24
b power's	-26
b powerball	-15
b preheat	24
b prob	23
b profile's	24
b prv's	39
b psalm	-26
b pu	18
b pull	32
b pulled	-53
b pulling	45
b pulls	26
b pumped	66
b purlins	38
b put	64
b puts	31
b qty	58
b quarter	-37
b quiet	-19
b quit	-34
b quoted	-25
b r	-47
b race	-37
b rack	-65
b rafters	50
b rail	23
b rail's	35
b raise	60
b ramp	19
b range	47
b rapid	-32
b rate's	-18
b rated	18
b rather	-18
b ratio's	90
b rcbo	16
b rcbo's	23
b reach	-15
b read	54
b reading	62
b reads	77
b rebar's	21
b recirc	48
b red	-24
b register's	34
b relief	39
b rental	-46
b replace	51
b report	-20
b return	61
b return's	38
b returned	34
b rev	24
b reveal's	34
b rfi	-16
b rh	30
b right	-70
b ring	-16
b rip	31
b ripped	15
b rise	72
b riser	-40
b rm	-91
b rock	44
b rod	28
b rod's	21
b roll	-22
b rolled	-38
b rolls	-36
b roof	-18
b room	-55
b rotors	-25
b rough	16
b roughed	19
b roughly	33
b round	-59
b row	-49
b rows	15
b rtu	-79
b run	35
b running	15
b runs	20
b s	27
b safe	-54
b sags	19
b same	-21
b sand	-23
b sat	19
b saturday	-40
b saves	-19
b saying	30
b says	23
b scaff	31
b scale	-78
b sch	-41
b screen	16
b seal	-23
b seat	25
b seat's	-37
b section	-48
b send	-31
b sent	75
b service	17
b set	151
b sets	-68
b setting	-25
b seventeen	-20
b seventy	87
b shave	38
b she	-57
b she'll	-68
b she's	-88
b shedding's	-28
b sheet	-52
b sheets	36
b shell's	-30
b shellac	36
b shelves	32
b shelving	-46
b shift	-19
b shift's	-30
b shld	21
b shoe	18
b shop	-18
b short	84
b shorted	74
b shot	17
b should	82
b should've	51
b shower	-40
b shows	69
b side	53
b sign's	29
b silicone	32
b sill	47
b sill's	49
b since	-77
b siri	-24
b sister	44
b site	-33
b six	37
b sixteenth	-44
b sixty	56
b skirting	-19
b slab	46
b slab's	44
b slip	-17
b slope's	32
b slump	96
b smokes	-28
b smoking	-34
b smoko	-45
b snake	-36
b snow	19
b so	38
b soft	28
b sold	68
b solid	-30
b some	31
b somebody	62
b something	-22
b sometime	-70
b somewhere	99
b sorry	15
b space	21
b spaced	63
b spacing	55
b span's	21
b spare	23
b spec	57
b sphere	45
b splash	20
b spot	-20
b spring's	-32
b squad	-16
b squares	35
b squeak	32
b stack	31
b stage	-32
b stainless	21
b stair	-38
b stairs	-24
b stairwell	18
b standing	23
b start	-39
b started	-59
b starter	25
b starting	-44
b starts	-23
b stat	19
b stat's	26
b static	107
b static's	52
b station	-22
b stem	34
b step	-31
b step's	43
b steps	-23
b sticks	38
b stirrups	76
b stitch	-19
b stock	25
b stock's	-33
b stone	32
b string	29
b strip	-24
b strips	28
b stub	28
b stud	18
b studio	-23
b studs	66
b stuff	47
b sub	-20
b sub's	-16
b subcool	48
b subcool's	18
b subfloor	36
b subfloor's	20
b suction's	19
b suite	-39
b summer	-32
b superheat	28
b superheat's	48
b supply	38
b supply's	50
b swap	37
b sweet	-16
b swing	-30
b switch	-15
b t	15
b table	-103
b tag	-44
b tagged	-20
b take	-19
b takes	-26
b talks	-37
b tank's	15
b tap	42
b team's	-47
b temp	87
b tempered	16
b ten	-31
b tenant	-30
b terms	-71
b test	-40
b tested	49
b th	-32
b than	29
b that	-27
b that'll	-22
b that's	-62
b the	-18
b their	-40
b them	18
b then	-41
b thermostat's	48
b they	-40
b they'll	-39
b they're	-89
b they've	-20
b thick	34
b thin	67
b thing	-27
b thinks	-25
b third	-25
b thirteen	57
b this	-50
b those	28
b though	23
b thousand	-39
b three	25
b throat's	56
b through	-16
b throw	41
b throwing	-27
b throws	-44
b thurs	-19
b thursday	-20
b ticket	-31
b tide's	-46
b tie	26
b ties	34
b til	-44
b tile	36
b till	-41
b time	-39
b times	-53
b tires	-30
b to	43
b toast	20
b toilet	43
b tomorrow	-55
b ton	28
b too	21
b toolbox	-20
b top	-33
b torque	54
b total	28
b touch	27
b tracking	-18
b trailer	-45
b trap	28
b tray	28
b tread	-45
b treads	26
b trim	27
b trimmed	22
b tripped	-28
b tripping	26
b truck's	-71
b tune	-78
b turned	-47
b turning	-18
b turns	-17
b twenty	63
b two	24
b two's	16
b txt	-20
b type	-96
b u	-91
b under	16
b unit	-104
b upsize	37
b upstairs	46
b upstand's	33
b use	41
b used	83
b utility	-19
b v	-20
b valve	73
b van	50
b vanity	74
b vent	34
b vikings	-42
b voltage	70
b volts	39
b voted	-25
b wait	16
b waiting	21
b walk	-35
b wall	67
b wall's	35
b wallpaper	-23
b walnut	-43
b want	41
b wanted	36
b wants	55
b wardrobe	-49
b was	30
b wash	-35
b water's	38
b way	-42
b we	34
b we're	-54
b we've	21
b wednesday	-29
b wee	-35
b week	-29
b well	22
b went	20
b wet	67
b what's	-40
b when	28
b where	30
b which	-16
b who's	-59
b wide	49
b width	23
b window	-59
b windows	23
b wire's	38
b with	37
b wo	-16
b won't	26
b wood	-28
b work	-29
b works	-18
b would	24
b wound	17
b x	52
b yard	-19
b years	-37
b your	-38
b zero	-61
b zone	-75
b zz	-30
b ×	29
bare 0	-17
bare 1	-59
bare 2	51
bare 3	32
behind area area	22
behind area crews'	-69
behind area defect	-17
behind area end	20
behind area mark	-87
behind area part	-38
behind area plain	-38
behind break mark	-106
behind crews' area	-20
behind crews' end	-64
behind crews' finish	-16
behind crews' material	53
behind crews' number	31
behind crews' part	51
behind crews' strange	51
behind crews' surface	33
behind crews' unknown	-50
behind defect crews'	-22
behind defect plain	46
behind end area	-35
behind end crews'	21
behind end defect	115
behind end finish	-54
behind end fixture	38
behind end mark	-81
behind end material	20
behind end others'	-20
behind end part	72
behind end plain	38
behind end strange	-49
behind end verb	-57
behind finish area	-22
behind finish end	-25
behind finish mark	-28
behind finish verb	21
behind fixture defect	-27
behind fixture end	-37
behind fixture mark	-17
behind fixture others'	-18
behind fixture verb	-21
behind mark break	-23
behind mark crews'	39
behind mark defect	21
behind mark end	-24
behind mark fixture	40
behind mark mark	-59
behind mark number	45
behind mark part	45
behind mark surface	-38
behind mark tool	16
behind mark unknown	39
behind material fixture	-42
behind material material	19
behind material others'	28
behind material plain	39
behind material unknown	40
behind number end	-35
behind number number	-44
behind number unknown	-20
behind others' end	72
behind others' mark	115
behind others' others'	16
behind others' part	-41
behind others' plain	38
behind others' role	-27
behind others' surface	-49
behind others' unknown	-28
behind part crews'	-16
behind part defect	-52
behind part mark	18
behind part material	-23
behind part plain	-49
behind part verb	-18
behind plain area	60
behind plain crews'	22
behind plain defect	42
behind plain end	38
behind plain finish	18
behind plain mark	69
behind plain material	64
behind plain number	20
behind plain part	29
behind plain strange	-40
behind plain surface	21
behind plain tool	16
behind plain verb	23
behind role crews'	60
behind strange crews'	-20
behind strange mark	25
behind strange plain	-25
behind strange strange	-22
behind surface crews'	-15
behind surface defect	-33
behind surface end	47
behind surface fixture	32
behind surface others'	-18
behind surface part	-43
behind surface plain	-42
behind surface surface	22
behind tool end	-67
behind tool plain	-58
behind unknown end	-114
behind unknown mark	-68
behind unknown material	-37
behind unknown number	-45
behind unknown others'	-55
behind unknown part	-31
behind unknown plain	-53
behind unknown verb	44
behind verb crews'	-69
behind verb mark	15
behind verb material	-33
behind verb others'	-33
behind verb part	-18
behind verb plain	-34
behind verb strange	-16
behind verb verb	-17
claims 2	-47
counted head area	63
counted head crews'	17
counted head finish	-16
counted head fixture	55
counted head material	119
counted head others'	-157
counted head part	123
counted head plain	-60
counted head role	-59
counted head strange	-102
counted head surface	46
counted head tool	57
counted head verb	-32
counted next defect	42
counted next fixture	33
counted next mark	-63
counted next material	67
counted next others'	-23
counted next part	36
counted next role	-56
counted next strange	-61
counted next surface	-18
counted next tool	41
counted next work	-32
form 0figures 4	-53
form figures 2	46
form figures 4	-66
form figures 5	-42
form oh	-45
form parts	57
head 1	40
head 2	19
head 3	46
head none	-17
l of cars	-38
l of clock	-93
l of kin	-38
l of media	17
l of money	-61
l of papers	-40
l of past	28
l of phones	-50
l of roads	-105
l of school	-62
l of services	-29
l of sport	-42
l1 	32
l1 
	-98
l1 "	38
l1 #	-18
l1 $	-91
l1 (	23
l1 +	46
l1 ,	56
l1 -	-61
l1 3	-18
l1 :	68
l1 @	20
l1 a	27
l1 about	29
l1 add	61
l1 adds	37
l1 after	-52
l1 against	36
l1 aisle	-16
l1 all	64
l1 allow	44
l1 amp	30
l1 an	-68
l1 and	85
l1 another	-24
l1 apartment	-25
l1 apt	-47
l1 are	26
l1 around	-32
l1 asking	-19
l1 at	23
l1 b	-30
l1 backfill	58
l1 bars	24
l1 bath	-86
l1 bath's	21
l1 bay	-95
l1 be	81
l1 beam	34
l1 bed	-49
l1 bedroom	-79
l1 been	33
l1 before	-30
l1 between	-24
l1 big	-62
l1 bin	-37
l1 birds	-16
l1 bldg	-36
l1 bogeyed	-22
l1 boring	-27
l1 bottom	-34
l1 bottom's	17
l1 bought	81
l1 bout	35
l1 box	-20
l1 bracket	21
l1 breaker	-71
l1 bring	113
l1 broke	25
l1 brought	70
l1 building	-39
l1 bus	-25
l1 but	34
l1 buy	94
l1 by	21
l1 called	-17
l1 can	29
l1 cat	-24
l1 ceiling's	20
l1 ch	-36
l1 change	19
l1 channel	-41
l1 charging	-27
l1 cinco	26
l1 circuit	-88
l1 ckts	-20
l1 class	-27
l1 closet	35
l1 coat	-37
l1 code	-94
l1 code's	-49
l1 cold's	37
l1 correction	15
l1 corta	36
l1 count's	27
l1 counter	-16
l1 cover's	55
l1 cr	-17
l1 crowned	27
l1 cut	46
l1 day	-105
l1 deductible's	-33
l1 delta's	44
l1 den	16
l1 dirt	21
l1 do	-19
l1 dock	-19
l1 doing	-16
l1 done	24
l1 door	-50
l1 double	-38
l1 dowels	20
l1 drawer	-45
l1 drawing	-18
l1 drew	-31
l1 drops	35
l1 drove	19
l1 dynamic	21
l1 e	-22
l1 each	-37
l1 edge	33
l1 eight	-17
l1 elevator	-22
l1 eleven	-26
l1 embed	42
l1 end's	-30
l1 error	-50
l1 every	31
l1 exit	-64
l1 expires	-49
l1 exposure's	57
l1 extension's	-35
l1 exterior	-22
l1 eyes	-36
l1 f	-19
l1 fall's	19
l1 falls	-21
l1 fault	-23
l1 feeder	-19
l1 fell	47
l1 finished	-22
l1 first	-15
l1 fit	18
l1 five	-35
l1 fla	17
l1 flashes	-67
l1 flat	-42
l1 floor	-57
l1 foot	29
l1 forward	53
l1 found	58
l1 four	-48
l1 fourteen	-46
l1 from	-40
l1 front	35
l1 full	48
l1 g	-18
l1 gap's	-20
l1 garage	63
l1 gate	-30
l1 get	149
l1 gets	58
l1 gimme	90
l1 going	45
l1 gone	-26
l1 good	-32
l1 got	128
l1 grab	60
l1 grade	-31
l1 hall	55
l1 hang	-16
l1 has	97
l1 have	67
l1 he's	-104
l1 head	18
l1 headroom's	25
l1 hearth's	34
l1 heater	-16
l1 height	41
l1 height's	23
l1 hinges	15
l1 hit	-24
l1 hole	-62
l1 hole's	29
l1 homeruns	18
l1 hour's	-51
l1 hub	23
l1 humidity's	29
l1 hundred	-23
l1 hung	42
l1 hwy	-19
l1 i'm	-25
l1 im	-26
l1 in	-69
l1 inch	64
l1 install	-25
l1 interpass	24
l1 invert's	37
l1 invoice	-28
l1 is	58
l1 it	83
l1 it's	-55
l1 item	-30
l1 items	-17
l1 its	-16
l1 job	-34
l1 job's	-25
l1 jumper	-27
l1 just	95
l1 kept	42
l1 key	-64
l1 kid's	-28
l1 kitchen	30
l1 knock	25
l1 knocked	-24
l1 laborer	60
l1 lad's	-22
l1 ladder	-19
l1 laid	29
l1 landing	28
l1 lap	44
l1 last	23
l1 least	64
l1 leaves	79
l1 left	31
l1 level	-56
l1 like	-30
l1 limit's	32
l1 line	-81
l1 lintel	17
l1 lintel's	29
l1 long	-60
l1 longer	-17
l1 loop	-41
l1 lost	24
l1 lot	-97
l1 low	16
l1 lp	-35
l1 lvl	-37
l1 m	-31
l1 make	18
l1 makes	-18
l1 man's	-35
l1 mark	-36
l1 maybe	93
l1 me	47
l1 meant	20
l1 measure	-33
l1 measured	21
l1 meter's	15
l1 minus	30
l1 mm	-37
l1 mode	-40
l1 moisture	31
l1 nd	-18
l1 necesito	37
l1 need	139
l1 needs	58
l1 net	-40
l1 neutral's	23
l1 new	-87
l1 nine	-23
l1 nobody's	-51
l1 not	48
l1 note	-53
l1 now	39
l1 nozzle	-35
l1 number	-204
l1 number's	-87
l1 ocean's	-32
l1 of	-49
l1 off	-20
l1 offered	-25
l1 oh	-44
l1 old	-79
l1 on	-24
l1 one	-31
l1 ones	58
l1 only	81
l1 open	-18
l1 opened	-16
l1 or	-41
l1 order	21
l1 ordered	21
l1 other	-18
l1 ought	-17
l1 out	98
l1 outlets	15
l1 overhang's	21
l1 owns	-23
l1 p	-48
l1 packers	-21
l1 paddock	-16
l1 page	-23
l1 pan's	17
l1 panel	-23
l1 panel's	17
l1 part	-31
l1 past	-24
l1 pier	-41
l1 pin	-27
l1 plant	21
l1 plate	29
l1 plot	-17
l1 plus	64
l1 po	-16
l1 port	-19
l1 poured	17
l1 pressure's	-31
l1 profile's	24
l1 psalm	-26
l1 pull	51
l1 pulling	39
l1 pump	-20
l1 put	50
l1 quarter	76
l1 quoted	-20
l1 r	-63
l1 rack	-32
l1 ran	40
l1 rate's	-18
l1 rated	44
l1 ratio's	46
l1 read	54
l1 reading	43
l1 reads	61
l1 recirc	48
l1 red	41
l1 replace	22
l1 replaced	35
l1 returned	19
l1 reveal's	18
l1 rfi	-16
l1 rh	23
l1 right	-56
l1 rise	59
l1 riser	-33
l1 rm	-99
l1 rolled	-38
l1 room	-88
l1 roughly	33
l1 row	-30
l1 rtu	-20
l1 rule	-25
l1 run	37
l1 running	15
l1 sags	17
l1 saves	-19
l1 say	22
l1 says	40
l1 scaff	31
l1 sch	-51
l1 seat's	-37
l1 second	-24
l1 section	-37
l1 see	45
l1 sent	32
l1 set	56
l1 setting	-19
l1 shave	38
l1 she's	-55
l1 sheet	-49
l1 shelf	-41
l1 short	57
l1 shot	-17
l1 shower	-23
l1 shows	37
l1 side	17
l1 since	-43
l1 sister	29
l1 six	31
l1 sixteen	-19
l1 sixty	-17
l1 size	-15
l1 slide	-46
l1 slip	-17
l1 slope's	32
l1 so	91
l1 solid	-28
l1 spacing	23
l1 span's	21
l1 spec	22
l1 squad	-16
l1 square	-45
l1 stack	17
l1 stage	-32
l1 stair	-30
l1 starter	25
l1 static	59
l1 static's	30
l1 station	-22
l1 step	-39
l1 still	58
l1 stone	34
l1 strike	-44
l1 studio	-25
l1 subcool	30
l1 suction's	16
l1 suite	-37
l1 superheat's	16
l1 swap	42
l1 sweet	-16
l1 switch	-53
l1 t	17
l1 table	-18
l1 tag	-28
l1 take	37
l1 takes	-27
l1 talks	-37
l1 temp	26
l1 ten	-21
l1 than	30
l1 that	-78
l1 that's	-17
l1 the	-115
l1 them	-28
l1 then	-18
l1 there	-24
l1 thing	-44
l1 this	-26
l1 throat's	56
l1 throw	42
l1 til	-42
l1 till	-57
l1 to	64
l1 took	73
l1 top	-18
l1 tread	-41
l1 truck	-57
l1 turned	-31
l1 turning	-18
l1 twelve	-31
l1 two	23
l1 two's	26
l1 type	-69
l1 under	89
l1 unit	-142
l1 up	36
l1 us	53
l1 use	32
l1 used	90
l1 vanity	25
l1 vikings	-22
l1 voltage	70
l1 volts	28
l1 wall	32
l1 wall's	27
l1 want	58
l1 wanted	22
l1 wants	40
l1 was	76
l1 we're	49
l1 well	39
l1 with	23
l1 wo	-16
l1 x	99
l1 you	-25
l1 your	-49
l1 zone	-121
l1 £	-38
l1 ×	29
l1. "	38
l1. #	28
l1. $	-91
l1. 's	96
l1. (	23
l1. +	46
l1. ,	56
l1. -	-61
l1. -ed	60
l1. -ing	28
l1. -ly	58
l1. -s	73
l1. /	-85
l1. 1	-63
l1. :	68
l1. @	20
l1. Name	-97
l1. letter	-54
l1. one	-111
l1. unit	-59
l1. £	-38
l2 	-18
l2 
	24
l2 '	49
l2 (	42
l2 ,	24
l2 1	-71
l2 11	45
l2 118	-22
l2 12	20
l2 1700	17
l2 18	-24
l2 180	36
l2 2	15
l2 31	-23
l2 34	21
l2 4	-20
l2 400	-28
l2 47	-35
l2 555	-16
l2 6	-62
l2 60	21
l2 600	38
l2 68	64
l2 9	21
l2 95	-37
l2 a	-133
l2 acts	-36
l2 again	-45
l2 against	15
l2 all	-23
l2 allow	60
l2 already	17
l2 amps	16
l2 an	-39
l2 and	26
l2 anything	27
l2 apartment	29
l2 apprentice	-44
l2 aquastat	33
l2 architect	25
l2 are	18
l2 asked	25
l2 at	-101
l2 away	25
l2 back	-29
l2 basement	28
l2 battery's	-49
l2 be	35
l2 been	-17
l2 bench	24
l2 bet	-23
l2 billed	-23
l2 black	35
l2 blacks	-32
l2 blast	24
l2 block	19
l2 blood	-41
l2 bolts	18
l2 bond's	-21
l2 booked	-16
l2 boss	-26
l2 bottom	18
l2 box	25
l2 boxes	41
l2 bracket	29
l2 breaker's	35
l2 broke	63
l2 bundles	85
l2 burned	32
l2 buzz	60
l2 by	-62
l2 call	89
l2 calls	24
l2 came	20
l2 cap	23
l2 caps	16
l2 change	-67
l2 changed	27
l2 charge	-16
l2 charged	-56
l2 check	-24
l2 chimney	-31
l2 chlorine's	53
l2 choir's	-26
l2 clearance	15
l2 close	33
l2 closer	38
l2 closes	-36
l2 code	70
l2 color	-20
l2 column	-39
l2 comes	27
l2 coming	-43
l2 compacted	29
l2 compaction's	23
l2 corner	22
l2 count	-19
l2 counter's	31
l2 counts	28
l2 curtain's	-23
l2 curve	19
l2 cut	55
l2 day	-31
l2 days	47
l2 diagonals	61
l2 dip	-32
l2 display	-66
l2 dog	-20
l2 don't	-87
l2 dos	45
l2 dowel	23
l2 down	32
l2 draft's	43
l2 drawing	24
l2 dropped	29
l2 dryer	-28
l2 drywall's	23
l2 eight	28
l2 eighteen	22
l2 eighth	18
l2 em	35
l2 epoxy	-29
l2 fan	-25
l2 fault	-21
l2 fifty	-24
l2 finish	18
l2 fit	41
l2 five	36
l2 flights	-21
l2 flue	36
l2 foot	35
l2 footer	-25
l2 for	-62
l2 forty	-32
l2 forward	-48
l2 four	45
l2 fourth	-57
l2 friday	-33
l2 from	-44
l2 ft	35
l2 full	-63
l2 g	-19
l2 gallons	-19
l2 gap's	-19
l2 gas	-34
l2 gate	-24
l2 gave	71
l2 get	-40
l2 give	-29
l2 gives	-47
l2 glass	22
l2 goin	-18
l2 going	-48
l2 gone	15
l2 good	27
l2 gotta	56
l2 grab	-27
l2 guy	53
l2 half	-40
l2 happy	-53
l2 hardware	-57
l2 hatch	-16
l2 haul	-65
l2 have	22
l2 hdw	-16
l2 he	-54
l2 head	53
l2 header	32
l2 header's	30
l2 heads	-24
l2 held	22
l2 here	-31
l2 hes	-24
l2 high	57
l2 hinges	-28
l2 his	-17
l2 hole's	17
l2 hook's	17
l2 hot	-15
l2 hour	-25
l2 hours	-29
l2 house	-19
l2 humidity	31
l2 hundred	22
l2 i	93
l2 i'd	36
l2 i'll	17
l2 in	-59
l2 inch	36
l2 innings	-18
l2 inside	34
l2 instead	52
l2 ipad's	-35
l2 it'll	29
l2 it's	-25
l2 joists	24
l2 keys	-58
l2 kid	-42
l2 kit	23
l2 kitchen	-30
l2 knees	-29
l2 knots	33
l2 lands	-50
l2 lap	84
l2 left	53
l2 leg	55
l2 lengths	20
l2 level	-22
l2 lime	21
l2 load's	-25
l2 locked	-28
l2 loose	31
l2 low	67
l2 lp2	-20
l2 lunch	-18
l2 lvl	28
l2 m	17
l2 make	83
l2 materials	-24
l2 maybe	-31
l2 medium	17
l2 meter	53
l2 mil	-44
l2 mile	-23
l2 missing	41
l2 mix	42
l2 mixed	21
l2 mm	37
l2 moisture's	32
l2 mon	18
l2 monday	26
l2 more	18
l2 morning	25
l2 my	18
l2 nail	33
l2 necesito	26
l2 need	19
l2 needs	26
l2 new	35
l2 nineteen	-34
l2 no	-73
l2 not	-64
l2 number	-24
l2 of	-68
l2 of cars	-26
l2 of clock	-35
l2 of food	-38
l2 of kin	-35
l2 of media	-15
l2 of money	-61
l2 of past	-18
l2 of phones	32
l2 of roads	37
l2 of school	-80
l2 of sport	-22
l2 off	-81
l2 office	-17
l2 offset	20
l2 oh	-22
l2 ok	-32
l2 old	-21
l2 on	-66
l2 one	-34
l2 ones	30
l2 only	50
l2 opening	17
l2 order	-17
l2 ot	-20
l2 out	-52
l2 outlets	25
l2 owe	-26
l2 owes	-19
l2 pack	-22
l2 packs	74
l2 pad	33
l2 paint	-23
l2 parks	-22
l2 part	-18
l2 passed	-22
l2 pcs	-69
l2 per	-22
l2 permit	-21
l2 ph	21
l2 phone's	-32
l2 pick	83
l2 picked	17
l2 pickets	83
l2 pin	-33
l2 pipe	37
l2 pipe's	16
l2 plate	-21
l2 posts	15
l2 powerball	-17
l2 pressure's	21
l2 prob	30
l2 prv's	39
l2 pumped	18
l2 purlins	27
l2 put	65
l2 puts	31
l2 qty	62
l2 quarter	-34
l2 quiet	-18
l2 r	-53
l2 race	-37
l2 rafters	21
l2 rail	27
l2 raise	55
l2 ran	-46
l2 range	25
l2 rated	-24
l2 rather	-19
l2 rcbo's	17
l2 real	28
l2 rebar's	-46
l2 red	-58
l2 return	50
l2 return's	34
l2 rod	15
l2 room	-29
l2 rough	22
l2 round	-63
l2 rows	15
l2 rtu	-51
l2 sand	-22
l2 says	26
l2 screws	31
l2 see	-27
l2 sent	29
l2 set	94
l2 sets	-83
l2 seven	-18
l2 seventy	22
l2 she'll	-57
l2 she's	-22
l2 shedding's	-27
l2 shelf	36
l2 shift's	-30
l2 shim	17
l2 short	45
l2 shorted	72
l2 shot	64
l2 should	61
l2 should've	33
l2 sill	37
l2 sill's	37
l2 site	-19
l2 six	-40
l2 sixteenth	-49
l2 sixty	29
l2 slump	38
l2 smokes	-28
l2 smoking	-34
l2 snake	-36
l2 so	34
l2 soft	22
l2 sometime	-34
l2 somewhere	82
l2 spaced	59
l2 spec	49
l2 sphere	45
l2 splash	20
l2 spring's	-39
l2 squares	15
l2 stairs	-29
l2 stairwell	21
l2 starting	-44
l2 static's	18
l2 sticks	47
l2 still	-34
l2 stirrups	76
l2 stock's	-33
l2 string	26
l2 stuck	24
l2 studs	39
l2 sub	-20
l2 subfloor's	18
l2 summer	-27
l2 supply's	24
l2 switch	18
l2 table	-57
l2 take	-40
l2 tempered	16
l2 ten	-70
l2 terms	-45
l2 tested	49
l2 that	54
l2 that's	-37
l2 the	-92
l2 them	26
l2 thermostat's	46
l2 they're	-45
l2 thin	22
l2 third	-40
l2 three	64
l2 through	-16
l2 throwing	-16
l2 throws	-44
l2 thursday	-27
l2 tide's	-46
l2 ties	25
l2 time	-19
l2 to	-44
l2 toast	17
l2 tomorrow	-75
l2 trap	29
l2 truck	21
l2 twelve	40
l2 two	-61
l2 type	-62
l2 u	-33
l2 under	-19
l2 unit	-23
l2 us	-35
l2 vanity	51
l2 wall	35
l2 wants	-28
l2 was	-69
l2 washer	28
l2 water's	36
l2 ways	-23
l2 we	60
l2 we're	-22
l2 wee	-35
l2 went	39
l2 what's	-48
l2 width	22
l2 will	26
l2 window	-62
l2 wound	17
l2 years	-40
l2 you	24
l2 zero	-60
l2. #	-18
l2. '	49
l2. (	42
l2. ,	24
l2. -ed	41
l2. -s	42
l2. /	19
l2. 1	-19
l2. Name	-28
l2. letter	33
l2. n't	-90
l2. one	-61
l2. unit	27
l3 
	-17
l3 '	-17
l3 (	18
l3 ,	22
l3 -	-23
l3 /	18
l3 1	-42
l3 1.5	31
l3 10	-74
l3 12	40
l3 16	-20
l3 1750	42
l3 2	17
l3 2214	-21
l3 3	20
l3 5	-17
l3 6	-19
l3 6120	-25
l3 7	-43
l3 8	16
l3 9	-17
l3 :	-20
l3 about	-24
l3 all	-38
l3 already	17
l3 also	-23
l3 am	-23
l3 amp	15
l3 amps	52
l3 an	54
l3 apart	48
l3 apiece	35
l3 are	16
l3 as	18
l3 at	-95
l3 b	-28
l3 back	-25
l3 bath	75
l3 bath's	17
l3 batten	26
l3 bay	49
l3 be	-46
l3 better	18
l3 between	-61
l3 big	20
l3 birdied	-22
l3 blow	28
l3 board's	-16
l3 bolt	-38
l3 bronze	16
l3 building	26
l3 bump	15
l3 busted	-31
l3 but	-30
l3 buy	-15
l3 by	53
l3 call	-25
l3 came	70
l3 can't	23
l3 change	53
l3 changed	19
l3 channel	-45
l3 ckts	-26
l3 claim's	-26
l3 cleaned	36
l3 cleanouts	16
l3 clear	38
l3 code	-24
l3 corta	45
l3 cracked	32
l3 crane's	-26
l3 cut	40
l3 deep	-20
l3 den	27
l3 digits	-46
l3 dimmers	68
l3 door	-19
l3 down	-15
l3 drop	16
l3 dryer	25
l3 dump	18
l3 dumpsters	32
l3 each	64
l3 eight	33
l3 eighty	-46
l3 ended	38
l3 expires	-48
l3 f	26
l3 falls	-20
l3 fan	19
l3 feeding	20
l3 fifty	-26
l3 fire	-19
l3 first	69
l3 flashes	-49
l3 flat	-31
l3 flew	-16
l3 foot	28
l3 footy's	-16
l3 form	29
l3 four	-42
l3 fourteen	36
l3 from	-28
l3 gallons	-35
l3 gate	-40
l3 generator	31
l3 get	-58
l3 gets	28
l3 goal	-29
l3 goes	17
l3 going	-40
l3 gone	22
l3 grab	31
l3 gray	-26
l3 grout's	50
l3 hank	-23
l3 he	-49
l3 he's	-36
l3 heads	21
l3 her	-28
l3 hes	-31
l3 him	-41
l3 hinges	-40
l3 his	-20
l3 hole	23
l3 hooks	16
l3 hour	-27
l3 hour's	-19
l3 hours	-16
l3 hung	20
l3 i'd	25
l3 i'm	35
l3 if	59
l3 im	-39
l3 inch	31
l3 inlet's	30
l3 is	-43
l3 island	18
l3 it's	-22
l3 items	-19
l3 its	-27
l3 jack's	17
l3 jumper	-64
l3 keep	61
l3 kicks	59
l3 kids	33
l3 knock	-21
l3 kpa	41
l3 last	-31
l3 left	-27
l3 leg	54
l3 let	-38
l3 lifted	34
l3 load	-24
l3 loads	-18
l3 long	26
l3 look	-17
l3 loose	21
l3 lumber's	-40
l3 marked	-52
l3 me	23
l3 mirror's	15
l3 mix	61
l3 mm	-16
l3 more	37
l3 move	29
l3 moved	-55
l3 my	-71
l3 new	22
l3 next	-58
l3 nine	60
l3 no	16
l3 nobody	-41
l3 nothing	36
l3 number	55
l3 of	19
l3 oh	27
l3 ohms	29
l3 ok	-16
l3 old	74
l3 on	22
l3 ones	-18
l3 ordered	18
l3 other	48
l3 ought	34
l3 out	-25
l3 outlets	-26
l3 owner	-21
l3 plans	66
l3 plinth	28
l3 plus	17
l3 press	-21
l3 pumped	55
l3 put	-58
l3 quit	-34
l3 r	30
l3 rack	-41
l3 rafters	29
l3 ratio's	53
l3 register's	31
l3 relief	39
l3 rental	-26
l3 rev	37
l3 rip	31
l3 rise	36
l3 room	26
l3 row	-19
l3 run	23
l3 s	26
l3 safe	-30
l3 says	-24
l3 see	-21
l3 service	17
l3 seven	22
l3 seventy	22
l3 she	-44
l3 shelves	16
l3 should	26
l3 sign's	29
l3 since	-49
l3 six	-27
l3 slide	44
l3 smoko	-28
l3 sold	-19
l3 some	36
l3 somebody	43
l3 spacing	16
l3 stairs	24
l3 start	-33
l3 started	-52
l3 stat's	-24
l3 static	21
l3 steps	-32
l3 still	-38
l3 stub	27
l3 subcool	19
l3 superheat's	32
l3 supposed	19
l3 switch	-27
l3 tap	20
l3 tape	-19
l3 team's	-37
l3 temp	49
l3 ten	-31
l3 test	-45
l3 th	-18
l3 that's	-19
l3 the	34
l3 them	22
l3 then	16
l3 there	50
l3 they	-30
l3 they're	-16
l3 thick	48
l3 thinks	-25
l3 thirteen	47
l3 thirty	-26
l3 three	-47
l3 thurs	-19
l3 thursday	20
l3 ticket	-20
l3 tie	36
l3 tile	33
l3 times	-35
l3 tires	-30
l3 to	31
l3 tomorrow	24
l3 too	30
l3 top	-15
l3 torque	54
l3 touch	25
l3 trim	26
l3 tripped	-23
l3 truck	20
l3 truck's	-18
l3 tune	-78
l3 twelve	33
l3 two	-21
l3 txt	-16
l3 u	-43
l3 unit	31
l3 up	-39
l3 upsize	37
l3 upstairs	21
l3 used	17
l3 valve	19
l3 van	20
l3 vent	26
l3 vikings	-21
l3 voted	-20
l3 wall	-17
l3 ways	18
l3 we	-33
l3 well	28
l3 wet	18
l3 white	40
l3 wide	16
l3 wire's	23
l3 wood	-33
l3 work	-16
l3 x	30
l3 yard	-24
l3 you	-59
l3 zz	-30
l3. '	-17
l3. (	18
l3. ,	22
l3. -	-23
l3. -ed	-38
l3. -ing	31
l3. :	-20
l3. n't	36
l3. unit	15
letter head 0	-56
letter head none	-24
long 10	-30
long 30	37
long 6	21
long undefined	-24
more figures 5	-23
more l. word	-47
more r 	-33
more r. #	-33
more r. word	-23
more words round	-38
names 0 strange 0	32
names 0 strange 1	-67
names 0 strange 2	-111
names 1	-16
names 1 strange 1	-37
names 1 strange 2	-18
names 2 strange 1	43
names 2 strange 2	51
names 3	29
names 4	15
of cars	34
of food	-26
of kin	-74
of media	-82
of money	-58
of past	-21
of phones	-61
of roads	-30
of school	-42
of services	22
of so many 0	41
of so many 1	-43
of so many 2	-39
of so many 3	-38
one head 0	17
one head none	-116
r of body	-44
r of cars	32
r of clock	-30
r of food	-55
r of kin	-85
r of money	-160
r of services	49
r of sport	-19
r1 )	-65
r1 ,	38
r1 -	-86
r1 .	25
r1 12	28
r1 2	48
r1 3	-25
r1 4	18
r1 50	-27
r1 555	-17
r1 7	-28
r1 :	-122
r1 @	18
r1 a	-26
r1 aa	20
r1 above	41
r1 across	30
r1 adds	-27
r1 advil	-21
r1 after	16
r1 again	-44
r1 against	35
r1 alarm	-23
r1 along	18
r1 already	-51
r1 an	-61
r1 anchors	20
r1 and	-19
r1 apart	67
r1 apiece	31
r1 area	-27
r1 as	-28
r1 at	40
r1 b	-42
r1 baby	17
r1 back	41
r1 bad	27
r1 banksia	-22
r1 bars	-17
r1 base	24
r1 baths	25
r1 batts	-69
r1 bays	-29
r1 be	22
r1 bedroom	-21
r1 belt	-21
r1 blade	-40
r1 blades	29
r1 blank	16
r1 blinds	38
r1 blown	19
r1 board	33
r1 boards	58
r1 bracket	23
r1 brass	39
r1 brg	17
r1 bricks	-16
r1 broke	-16
r1 bucks	-134
r1 burner	-52
r1 but	36
r1 by	52
r1 c	-22
r1 call	16
r1 calls	-15
r1 can	-31
r1 cells	33
r1 cement	-18
r1 centers	25
r1 centres	25
r1 chance	-16
r1 clear	34
r1 closed	46
r1 closets	19
r1 coffee	-23
r1 come	-17
r1 coming	30
r1 common	41
r1 connections	-16
r1 corner	50
r1 corridor	-20
r1 cr	21
r1 cracked	24
r1 creams	-16
r1 crew	-30
r1 crows	-33
r1 cut	21
r1 d	-15
r1 dash	-21
r1 dead	28
r1 decks	20
r1 deep	70
r1 den	33
r1 dentists	-43
r1 dimmers	23
r1 dollar	-47
r1 dollars	-21
r1 don't	36
r1 done	56
r1 door	-20
r1 doors	21
r1 down	19
r1 dutchmen	25
r1 dynamic	23
r1 each	80
r1 elbows	17
r1 elsewhere	16
r1 euro	-92
r1 even	27
r1 every	-21
r1 exit	28
r1 extra	60
r1 extras	50
r1 faced	-17
r1 fall	37
r1 fifty	-35
r1 fingers	-26
r1 five	-63
r1 flat	25
r1 floor	23
r1 flowing	31
r1 forty	-25
r1 four	-44
r1 fourteen	-22
r1 from	-16
r1 gang	-73
r1 gasket	15
r1 gets	-33
r1 give	42
r1 go	-60
r1 goes	-32
r1 going	-21
r1 gone	-35
r1 good	20
r1 got	-21
r1 grille	-40
r1 guys	-59
r1 had	-22
r1 hall	37
r1 hand	-36
r1 handle	-60
r1 has	-72
r1 have	32
r1 he'll	-36
r1 head	24
r1 head's	16
r1 heads	69
r1 helpers	-33
r1 here	87
r1 high	99
r1 hinges	36
r1 hit	-22
r1 hits	17
r1 hole	-84
r1 hooks	27
r1 hot	-18
r1 house	-23
r1 hundreds	-24
r1 i	66
r1 i'll	27
r1 i've	-16
r1 in	25
r1 instead	28
r1 iron	-30
r1 is	-122
r1 ish	-22
r1 it	-27
r1 it'll	-36
r1 it's	-20
r1 juniper	-27
r1 just	74
r1 keys	-18
r1 kinds	-37
r1 ladders	17
r1 larch	-19
r1 last	-22
r1 laundromats	-23
r1 layer	-74
r1 layers	20
r1 left	73
r1 leg	-20
r1 lift	-24
r1 like	20
r1 limiter	41
r1 living	17
r1 location	45
r1 long	73
r1 loose	21
r1 love	-29
r1 lower	17
r1 man	-27
r1 maple	-43
r1 max	54
r1 minimum	15
r1 modules	21
r1 more	116
r1 nail	24
r1 need	38
r1 needs	-71
r1 net	-45
r1 new	47
r1 next	-24
r1 niches	21
r1 nine	20
r1 ninety	-59
r1 ninth	-23
r1 no	24
r1 north	-16
r1 nos	22
r1 not	15
r1 nothing	-31
r1 now	-24
r1 o'clock	-92
r1 obscure	16
r1 oc	46
r1 oclock	-28
r1 off	48
r1 outlets	32
r1 over	-25
r1 packers	-22
r1 panel	-114
r1 panhead	-28
r1 part	-57
r1 parts	58
r1 pavers	16
r1 people	-17
r1 per	68
r1 piers	25
r1 plate	34
r1 plinth	19
r1 pm	-27
r1 podium	-17
r1 problems	-21
r1 proud	22
r1 pulled	32
r1 put	-30
r1 quarter	-27
r1 quid	-28
r1 rafters	15
r1 rattle	21
r1 reads	-35
r1 ready	-19
r1 receps	17
r1 refused	-27
r1 return's	27
r1 right	-17
r1 rod	-18
r1 roof	-24
r1 rubber	23
r1 running	26
r1 runs	42
r1 sash	-16
r1 says	-59
r1 screens	44
r1 screws	16
r1 second	-63
r1 seeds	-33
r1 seven	-20
r1 shakes	-18
r1 sharp	-38
r1 she	-17
r1 shelf	-47
r1 shift	-40
r1 shims	23
r1 shingles	-25
r1 short	32
r1 should	83
r1 shows	-24
r1 side	-35
r1 sides	-28
r1 silicone	-28
r1 since	-31
r1 sink	51
r1 six	-43
r1 slope	20
r1 smoke	22
r1 smokes	-21
r1 so	34
r1 soft	-20
r1 something	-40
r1 space	17
r1 spaces	31
r1 spare	59
r1 speeds	-18
r1 split	-18
r1 spots	-22
r1 sprinkler	37
r1 square	-19
r1 stage	-35
r1 stakes	16
r1 stars	-41
r1 steps	-37
r1 still	62
r1 stone	-16
r1 stops	-19
r1 straps	18
r1 strikes	-51
r1 studs	48
r1 sugars	-18
r1 sure	-20
r1 switch	26
r1 tall	20
r1 ten	39
r1 the	-47
r1 then	-40
r1 they	19
r1 thick	45
r1 things	-24
r1 thirty	21
r1 this	-32
r1 three	24
r1 through	-16
r1 til	-17
r1 till	-21
r1 times	-107
r1 tip	-21
r1 to	43
r1 together	-42
r1 toilet	32
r1 toilets	35
r1 tomorrow	-32
r1 tonight	22
r1 total	25
r1 toward	29
r1 towel	20
r1 treads	24
r1 tries	55
r1 tripped	-37
r1 tub	-22
r1 two	-30
r1 up	22
r1 usb	22
r1 valve	-20
r1 voicemails	-15
r1 voices	-26
r1 wafers	22
r1 walls	30
r1 wants	-27
r1 was	-64
r1 waste	15
r1 wax	18
r1 way	-73
r1 ways	-47
r1 we're	-34
r1 wednesday	26
r1 were	25
r1 when	15
r1 where	40
r1 white	22
r1 wide	60
r1 will	49
r1 window	-43
r1 windows	61
r1 wood	-31
r1 work	46
r1 wrongs	-36
r1 x	59
r1. 's	26
r1. )	-65
r1. ,	38
r1. -	-86
r1. -ing	33
r1. .	25
r1. :	-122
r1. @	18
r1. Name	-48
r1. letter	55
r1. one	-133
r1. unit	22
r1. word	27
r2 "	27
r2 #	-20
r2 (	-24
r2 *	-22
r2 -	21
r2 .	18
r2 10	17
r2 100	33
r2 12	66
r2 15	24
r2 17	-22
r2 18	-22
r2 2	-41
r2 21	-27
r2 24	-16
r2 250	44
r2 28	25
r2 34	-17
r2 36	20
r2 41	21
r2 430	-35
r2 450	22
r2 5	-23
r2 6	21
r2 7	-37
r2 74	-24
r2 8	33
r2 :	-83
r2 about	-31
r2 acts	-28
r2 also	-35
r2 an	-26
r2 and	20
r2 are	54
r2 arms	-19
r2 around	-20
r2 ask	38
r2 at	-37
r2 b	-29
r2 back	-25
r2 ballasts	21
r2 bath	-20
r2 be	63
r2 bedroom	-24
r2 behind	21
r2 bent	33
r2 better	26
r2 board	36
r2 bought	29
r2 box	-87
r2 boxes	20
r2 brackets	-19
r2 bust	-24
r2 but	32
r2 buy	23
r2 buzz	24
r2 by	16
r2 c	-35
r2 cant	-21
r2 caulk	32
r2 ceiling	-16
r2 center	55
r2 change	-55
r2 changed	17
r2 circus	-28
r2 clear	39
r2 client	-27
r2 close	35
r2 closet	-17
r2 coat	16
r2 code	58
r2 concrete	-21
r2 cr	-19
r2 crack	-26
r2 cracked	109
r2 crown	-32
r2 day	-35
r2 days	-24
r2 deny	-20
r2 didn't	-17
r2 dirt	16
r2 do	83
r2 don't	-17
r2 done	-25
r2 down	-114
r2 drawing	17
r2 each	82
r2 easter	-28
r2 eight	-20
r2 eighteen	-40
r2 eighty	-40
r2 elbow	-17
r2 em	75
r2 epoxy	-34
r2 every	41
r2 everybody	-20
r2 everywhere	-33
r2 extra	-17
r2 faces	-30
r2 fan	-34
r2 far	56
r2 feet	-59
r2 fill	29
r2 filter	24
r2 fine	36
r2 five	-56
r2 floor	-29
r2 fogged	18
r2 foot	19
r2 footers	32
r2 for	49
r2 forward	-37
r2 four	-57
r2 fourteen	64
r2 framed	-37
r2 friday	-16
r2 fridays	-26
r2 from	-29
r2 front	61
r2 furnace	-39
r2 gal	-20
r2 gang	-20
r2 get	-25
r2 glue	-36
r2 go	62
r2 got	30
r2 grade	18
r2 ground	-20
r2 hair	31
r2 hang	58
r2 hauf	-19
r2 have	25
r2 he	-44
r2 he's	-30
r2 head	35
r2 heads	27
r2 hinges	-48
r2 his	20
r2 hole	-22
r2 hot	59
r2 hour	-29
r2 house	22
r2 hr	-37
r2 hung	23
r2 i	19
r2 i'll	-16
r2 i'm	-17
r2 if	-21
r2 inch	48
r2 inside	19
r2 is	-16
r2 it	21
r2 kitchen	17
r2 latch	16
r2 later	18
r2 laundry	-20
r2 lift	-20
r2 litre	27
r2 ln	-18
r2 lol	-26
r2 look	-19
r2 lost	16
r2 louvres	18
r2 medium	-52
r2 midspan	17
r2 mirror	-22
r2 missing	31
r2 monday	-18
r2 morning	-24
r2 must	-18
r2 never	-19
r2 night	-58
r2 nine	-19
r2 nineteen	-41
r2 ninety	22
r2 no	-17
r2 nobody's	-24
r2 noon	-40
r2 not	21
r2 nuts	19
r2 of	-28
r2 oh	-24
r2 ok	21
r2 one	-24
r2 ones	30
r2 open	29
r2 opens	-23
r2 or	19
r2 order	-16
r2 ounce	26
r2 over	38
r2 pad	-19
r2 paint	17
r2 panel	22
r2 past	-29
r2 patch	19
r2 pattern	-33
r2 plaster	19
r2 play	-31
r2 plus	16
r2 point	-37
r2 pop	-21
r2 pops	18
r2 pound	20
r2 primer	35
r2 quarter	46
r2 rail	-18
r2 range	-53
r2 rest	43
r2 ring	39
r2 road	28
r2 rolls	22
r2 row	29
r2 rub	44
r2 run	-18
r2 saturday	-33
r2 set	-31
r2 she	25
r2 she's	20
r2 sheet	-20
r2 shelf	20
r2 shimmed	34
r2 short	35
r2 should	-18
r2 shower	-35
r2 shut	-18
r2 shy	-15
r2 side	34
r2 siding	33
r2 sign	21
r2 signed	-49
r2 single	32
r2 site	52
r2 six	-47
r2 skip	-17
r2 slow	-18
r2 so	-15
r2 spraying	23
r2 spring	-20
r2 st	-23
r2 start	-22
r2 started	-34
r2 starting	-21
r2 sticks	-18
r2 still	-56
r2 stool	-33
r2 stop	20
r2 sunday	-35
r2 swap	29
r2 ten	47
r2 tens	16
r2 that	-16
r2 that's	15
r2 the	51
r2 there's	-25
r2 these	43
r2 they	-19
r2 they've	17
r2 thing	-60
r2 thirty	24
r2 this	44
r2 those	-26
r2 thousand	-25
r2 three	-53
r2 thursday	-27
r2 tighter	34
r2 time	-35
r2 times	20
r2 today	31
r2 told	17
r2 treinta	36
r2 trips	-20
r2 tuesday	-18
r2 twelve	21
r2 twenty	36
r2 two	-26
r2 us	-74
r2 used	20
r2 want	32
r2 wants	-22
r2 way	50
r2 ways	26
r2 week	26
r2 weekend	30
r2 were	27
r2 what	51
r2 windows	-16
r2 with	-19
r2 won't	22
r2 works	-36
r2 worth	19
r2 x	35
r2 you're	34
r2. "	27
r2. (	-24
r2. *	-22
r2. -	21
r2. -ed	20
r2. -ing	40
r2. .	18
r2. :	-83
r2. Name	-76
r2. letter	23
r2. n't	-22
r2. one	-64
r2. unit	50
r3 "	-17
r3 %	34
r3 '	-34
r3 10	-15
r3 14	-28
r3 28	-33
r3 3	27
r3 5	37
r3 6	-34
r3 7	45
r3 8	40
r3 90	17
r3 :	-58
r3 ;	-34
r3 a	-65
r3 act	-31
r3 after	-38
r3 again	-30
r3 air	27
r3 an	-29
r3 anodes	34
r3 are	26
r3 ask	-16
r3 bag	-23
r3 bags	17
r3 bar	17
r3 base	-18
r3 bath	39
r3 bay	24
r3 bears	-22
r3 behind	22
r3 black	56
r3 blinds	-18
r3 blue	-29
r3 board	-52
r3 boards	44
r3 books	-30
r3 bottom	93
r3 box	38
r3 braille	29
r3 break	-32
r3 broken	31
r3 bronze	24
r3 brought	33
r3 bucket	21
r3 but	15
r3 buzzer	-21
r3 cabinet	-21
r3 can	51
r3 cant	-31
r3 carton	29
r3 case	20
r3 cash	-24
r3 cb	-25
r3 centre	18
r3 change	-16
r3 changed	-25
r3 chimney	20
r3 chipped	47
r3 clips	19
r3 clock	-25
r3 close	-36
r3 closet	45
r3 cold	16
r3 color	-49
r3 corner	32
r3 count	56
r3 cover	32
r3 cracked	-36
r3 crew	-70
r3 crown	-29
r3 damaged	22
r3 dash	29
r3 de	26
r3 dead	25
r3 degree	21
r3 discharge	-26
r3 dock	-17
r3 done	-29
r3 door	52
r3 dot	-47
r3 down	17
r3 drawer	-23
r3 driving	-26
r3 dryer	24
r3 dump	51
r3 dumpster	-19
r3 each	-57
r3 edge	48
r3 eggshell	16
r3 either	-23
r3 eleven	-27
r3 ends	49
r3 enough	27
r3 every	-25
r3 falls	-26
r3 far	22
r3 fault	-22
r3 feet	18
r3 field	53
r3 fifteen	20
r3 fifty	17
r3 finish	25
r3 fit	35
r3 fixed	-23
r3 flapper	-35
r3 flashing	49
r3 flat	20
r3 floor	-15
r3 flow's	18
r3 foot	16
r3 for	-51
r3 form	15
r3 furnace	-21
r3 gang	43
r3 garage	-26
r3 gauge	25
r3 glass	17
r3 go	18
r3 good	-30
r3 got	58
r3 grab	-24
r3 grate	-20
r3 grille	-58
r3 grout	33
r3 guys	-36
r3 hangers	27
r3 has	21
r3 haul	-46
r3 have	18
r3 he	-30
r3 he's	-70
r3 head	-31
r3 heater	39
r3 held	55
r3 her	27
r3 high	29
r3 hinge	22
r3 hinges	-32
r3 hot	-15
r3 hour	25
r3 hours	-25
r3 how	-47
r3 i	-27
r3 i'll	-19
r3 idlers	57
r3 if	-24
r3 in	-30
r3 inch	-34
r3 is	-24
r3 it	44
r3 it's	24
r3 just	-18
r3 kept	-21
r3 kitchen	30
r3 knocked	-23
r3 landing	39
r3 laser	48
r3 last	15
r3 late	-25
r3 latest	-22
r3 leave	28
r3 leg	72
r3 length	50
r3 level	18
r3 lift	-40
r3 like	-65
r3 lock	22
r3 long	39
r3 lost	-16
r3 lot	-30
r3 low	18
r3 manifold	17
r3 manual	-32
r3 mate	-22
r3 middle	53
r3 min	-20
r3 minute	-37
r3 minutes	-36
r3 missing	-40
r3 molding	-33
r3 monday	-40
r3 month	28
r3 mosaic	21
r3 moved	-18
r3 nail	-34
r3 need	25
r3 neutral	21
r3 never	-20
r3 new	-50
r3 nineteen	25
r3 nose	47
r3 number	15
r3 off	-30
r3 oh	41
r3 old	-24
r3 on	-18
r3 open	-18
r3 opener	-20
r3 order	21
r3 other	25
r3 ought	29
r3 out	54
r3 outlet	19
r3 packers	-33
r3 painted	37
r3 panel	19
r3 parts	26
r3 plan	49
r3 platform	-18
r3 plenty	21
r3 plumbers	-24
r3 podium	-57
r3 point	31
r3 pool	-50
r3 porch	32
r3 pulled	-21
r3 put	22
r3 quarter	22
r3 radio	-55
r3 raining	-39
r3 ran	48
r3 range	-21
r3 reducers	23
r3 required	-19
r3 reset	-43
r3 right	-37
r3 rod	-17
r3 room	-18
r3 row	-28
r3 run	41
r3 runs	-17
r3 safe	38
r3 safety	-46
r3 saints	-45
r3 sand	21
r3 service	-23
r3 serving	-17
r3 set	23
r3 seven	-30
r3 seventy	26
r3 sheet	23
r3 shelf	22
r3 short	45
r3 shot	-30
r3 signal	-18
r3 sill	26
r3 six	27
r3 sixteen	29
r3 sixty	21
r3 slope	17
r3 so	-21
r3 soft	17
r3 some	21
r3 spare	-18
r3 spring	-20
r3 stay	-24
r3 steep	47
r3 steps	26
r3 still	-40
r3 straps	-19
r3 stripped	24
r3 stud	15
r3 sunday	-15
r3 take	40
r3 tape	51
r3 ten	-49
r3 than	-19
r3 then	19
r3 thermostat	-45
r3 they	-22
r3 this	-16
r3 three	27
r3 through	-41
r3 tied	49
r3 tile's	31
r3 timesheet	-25
r3 today	-22
r3 together	-34
r3 tomorrow	20
r3 tread	-40
r3 truck	-24
r3 tub	23
r3 tubes	32
r3 tubs	27
r3 twelve	-23
r3 twenty	33
r3 two	-46
r3 type	62
r3 uncles	-16
r3 under	-18
r3 underside	19
r3 up	-38
r3 use	27
r3 van	21
r3 vent	-15
r3 waste	23
r3 way	52
r3 we	42
r3 we're	21
r3 week	-25
r3 were	21
r3 what	-23
r3 white	-21
r3 wind	-21
r3 wire's	24
r3 with	-19
r3 x	29
r3 y	36
r3 year	-23
r3. "	-17
r3. %	34
r3. '	-34
r3. -ed	31
r3. -ing	-34
r3. -ly	-34
r3. 1	18
r3. :	-58
r3. ;	-34
r3. Name	-22
r3. n't	-29
r3. unit	33
rule 	-50
rule eachOf	84
rule pair	176
rule quantity/decimal	36
rule quantity/mixed	50
rule quantity/whole+taken-back	28
rule range	28
size 1	-35
size 20	23
size 60	25
size 99	19
size 9999	-43
size more	-60
strange 0	24
strange 1	-38
strange 2	-24
strange 3	-47
strange 4	-24
talk -1	-34
talk -2.5	-95
talk -5	-108
talk -9	-97
talk 0	-39
talk 1	-39
talk 14	60
talk 20	39
talk 9	74
talk each -1	-76
talk each -2.5	-126
talk each -5	-74
talk each 0	-45
talk each 1	-56
talk each 14	42
talk each 20	80
talk each 9	35
talk each less	-50
unit head 0	-51
unit head 1	-21
unit head none	-28
unit percent	-17
units 0	-49
units 1	66
units 2	36
word head 3	49
£ head none	-38
`;
