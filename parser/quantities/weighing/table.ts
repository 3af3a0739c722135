/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
" head none	36
# head 0	16
# head 1	60
$ head none	-91
's head 0	-47
's head none	120
( head none	21
+ head none	28
, head 0	28
, head none	38
- head 0	-20
- head 1	23
- head none	-68
-ed head none	57
-ing head 0	22
-ly head none	58
-s head 0	54
-s head 1	17
-s head none	39
. head 0	19
/ head none	-97
0 l 	-17
0 l at	25
0 l. #	-17
0 l. word	15
0 r to	-21
0 r with	-21
0 r. -s	18
0 r. word	-33
0 words	24
0 words round	-25
1 figures 1	53
1 head 0	16
1 head none	-79
1 l +	19
1 l ,	77
1 l .	31
1 l and	82
1 l another	-87
1 l at	31
1 l bars	26
1 l bath	-33
1 l be	21
1 l big	-55
1 l birds	-15
1 l bottom	-37
1 l bought	53
1 l bring	45
1 l broke	33
1 l buy	54
1 l by	49
1 l crowned	26
1 l cut	-42
1 l each	-38
1 l every	-106
1 l falls	-22
1 l for	-16
1 l found	26
1 l get	87
1 l good	-18
1 l got	82
1 l grab	30
1 l had	36
1 l hall	48
1 l have	18
1 l her	39
1 l hit	-26
1 l in	20
1 l inch	65
1 l is	-36
1 l just	86
1 l last	-69
1 l left	-29
1 l leg	-29
1 l long	-68
1 l longer	-16
1 l lost	54
1 l me	35
1 l mm	-36
1 l nd	-21
1 l need	40
1 l new	-89
1 l no	-21
1 l not	-26
1 l old	-72
1 l on	-20
1 l one	-30
1 l order	27
1 l other	-106
1 l over	-17
1 l plus	49
1 l put	86
1 l reading	26
1 l red	37
1 l right	-27
1 l says	15
1 l second	-26
1 l shave	38
1 l side	28
1 l so	16
1 l square	-29
1 l static's	23
1 l take	-22
1 l th	-15
1 l that	-90
1 l the	-137
1 l there's	38
1 l this	-27
1 l to	16
1 l type	-25
1 l up	22
1 l want	59
1 l was	34
1 l. +	19
1 l. ,	77
1 l. -ing	-29
1 l. -s	-27
1 l. .	31
1 l. letter	-19
1 l. one	-35
1 l. word	-44
1 parts	19
1 r 	25
1 r 
	17
1 r .	-49
1 r 3	17
1 r at	-67
1 r bracket	23
1 r cracked	24
1 r door	17
1 r down	-15
1 r end	-54
1 r exit	21
1 r for	41
1 r hand	-33
1 r has	-22
1 r head	22
1 r here	58
1 r hit	-20
1 r i	-19
1 r is	20
1 r it's	-19
1 r leg	-33
1 r location	48
1 r max	17
1 r missing	15
1 r new	47
1 r obscure	16
1 r of	-246
1 r off	47
1 r out	-21
1 r panel	-52
1 r plinth	18
1 r podium	-17
1 r reads	-29
1 r ring	41
1 r rod	-19
1 r seven	15
1 r shelf	-56
1 r short	-32
1 r shot	-17
1 r side	-29
1 r sink	51
1 r so	-26
1 r spare	46
1 r sprinkler	35
1 r stone	-15
1 r they	-16
1 r thing	-17
1 r three	17
1 r to	-72
1 r towel	18
1 r up	19
1 r was	-27
1 r wednesday	27
1 r wire	17
1 r. #	25
1 r. 's	-30
1 r. -ed	-22
1 r. -ing	27
1 r. -s	-67
1 r. .	-49
1 r. /	17
1 r. 1	77
1 r. one	49
1 r. word	-45
1 words	-69
12 figures 1	-25
12 l 	49
12 l 
	-32
12 l "	22
12 l :	39
12 l a	16
12 l about	23
12 l all	50
12 l and	19
12 l another	29
12 l apartment	-22
12 l are	22
12 l around	-32
12 l at	-111
12 l b	-21
12 l back	-30
12 l backfill	59
12 l bay	-23
12 l been	34
12 l before	-29
12 l between	-19
12 l bottom's	17
12 l bout	35
12 l breaker	-30
12 l brought	36
12 l building	-25
12 l but	43
12 l by	35
12 l can	30
12 l case	29
12 l cat	-22
12 l channel	-25
12 l circuit	-80
12 l code's	-18
12 l correction	16
12 l count	24
12 l cut	39
12 l door	-30
12 l double	-25
12 l drops	17
12 l e	-19
12 l embed	43
12 l end's	-31
12 l every	46
12 l exit	-24
12 l expires	-50
12 l exposure's	60
12 l fault	-23
12 l fell	47
12 l fit	18
12 l fla	19
12 l flat	-22
12 l floor	-51
12 l for	17
12 l four	-24
12 l front	-43
12 l garage	57
12 l get	22
12 l gone	-23
12 l got	82
12 l grab	22
12 l had	-29
12 l has	49
12 l have	19
12 l hit	-18
12 l hole	-64
12 l house	-47
12 l hung	41
12 l hwy	-19
12 l in	16
12 l is	29
12 l it	65
12 l it's	-86
12 l items	-18
12 l key	-35
12 l laborer	60
12 l lap	52
12 l last	15
12 l least	57
12 l leaves	50
12 l left	51
12 l like	-33
12 l line	-35
12 l lintel	17
12 l lost	-26
12 l lot	-54
12 l m	-17
12 l meant	19
12 l need	66
12 l needs	23
12 l nine	-19
12 l not	54
12 l note	-28
12 l number	-95
12 l number's	-27
12 l ocean's	-33
12 l of	24
12 l offered	-25
12 l on	-33
12 l only	16
12 l order	-16
12 l ought	-16
12 l out	24
12 l outta	-15
12 l over	-26
12 l overhang's	22
12 l owns	-22
12 l past	-63
12 l plus	16
12 l port	-18
12 l poured	18
12 l pulling	22
12 l ran	51
12 l reading	-58
12 l reads	16
12 l replaced	26
12 l reveal's	19
12 l right	-26
12 l riser	-46
12 l rm	-25
12 l rtu	-15
12 l run	39
12 l said	-46
12 l saves	-16
12 l says	33
12 l sent	16
12 l set	-60
12 l sheet	-25
12 l shows	16
12 l six	23
12 l so	28
12 l solid	-28
12 l stack	17
12 l starter	25
12 l step	-23
12 l subcool	32
12 l superheat's	16
12 l take	29
12 l takes	26
12 l than	44
12 l the	49
12 l then	-21
12 l there's	24
12 l throat's	55
12 l through	-47
12 l til	-45
12 l to	15
12 l took	17
12 l tread	-22
12 l truck	-33
12 l under	-17
12 l unit	-85
12 l up	61
12 l us	48
12 l used	16
12 l wants	-29
12 l we're	54
12 l x	45
12 l zone	-30
12 l ×	30
12 l. "	22
12 l. #	49
12 l. 's	32
12 l. -ed	79
12 l. -ing	-32
12 l. -s	34
12 l. /	-32
12 l. :	39
12 l. Name	-39
12 l. one	-46
12 l. unit	-22
12 l. word	-22
12 parts	25
12 r )	-28
12 r ,	21
12 r -	-17
12 r .	33
12 r :	-35
12 r a	19
12 r adds	-23
12 r and	-26
12 r as	-28
12 r at	18
12 r b	-40
12 r baby	17
12 r blown	19
12 r boards	18
12 r brg	17
12 r bucks	-17
12 r by	56
12 r cells	31
12 r closed	51
12 r coming	27
12 r creams	-15
12 r crows	-35
12 r dash	-19
12 r dead	27
12 r deep	42
12 r den	33
12 r dentists	-43
12 r do	16
12 r done	35
12 r door	-32
12 r doors	45
12 r down	25
12 r drops	23
12 r each	65
12 r eight	-22
12 r end	17
12 r fifty	-20
12 r five	-45
12 r for	38
12 r got	-31
12 r grille	-33
12 r has	-21
12 r heads	26
12 r here	39
12 r high	30
12 r hits	27
12 r hole	-37
12 r homeruns	27
12 r house	-23
12 r i	17
12 r in	-23
12 r instead	26
12 r iron	-28
12 r is	-36
12 r it	-17
12 r last	-28
12 r laundromats	-22
12 r left	55
12 r legs	-34
12 r lights	16
12 r like	38
12 r long	21
12 r love	-31
12 r maple	-30
12 r more	47
12 r needs	-61
12 r no	-28
12 r o'clock	-38
12 r of	55
12 r off	30
12 r on	31
12 r out	-87
12 r panel	-37
12 r rattle	22
12 r roof	-25
12 r running	18
12 r seeds	-32
12 r sharp	-27
12 r shift	-39
12 r short	68
12 r should	25
12 r shows	-20
12 r six	-41
12 r so	21
12 r something	-40
12 r stops	-16
12 r studs	19
12 r the	25
12 r this	-22
12 r through	-18
12 r till	-24
12 r times	-16
12 r to	26
12 r toward	30
12 r tripped	-15
12 r two	-22
12 r valve	-20
12 r voicemails	-15
12 r wants	-18
12 r was	-21
12 r when	-20
12 r wide	18
12 r wire	-24
12 r work	48
12 r x	16
12 r. )	-28
12 r. ,	21
12 r. -	-17
12 r. -ed	25
12 r. -s	21
12 r. .	33
12 r. :	-35
12 r. Name	-29
12 r. one	-99
12 r. unit	72
12 words	20
12 words round	-26
2 l 	26
2 l 
	-27
2 l (	20
2 l +	17
2 l ,	25
2 l -	-27
2 l adds	36
2 l another	20
2 l around	-23
2 l at	-76
2 l back	24
2 l bath	-46
2 l bay	-57
2 l beam	34
2 l bed	-28
2 l bedroom	-68
2 l bought	21
2 l breaker	-16
2 l bring	41
2 l building	-16
2 l buy	31
2 l charging	-29
2 l cinco	25
2 l corta	37
2 l count	-40
2 l cover's	42
2 l day	-62
2 l dirt	22
2 l drawer	-45
2 l eyes	-32
2 l flashes	-26
2 l flat	-37
2 l forward	55
2 l fourteen	-26
2 l from	-27
2 l gets	50
2 l grade's	21
2 l hall	26
2 l homeruns	17
2 l in	-25
2 l is	17
2 l it	24
2 l jumper	-32
2 l just	16
2 l kept	28
2 l landing	29
2 l last	69
2 l leg	-39
2 l low	18
2 l makes	-21
2 l maybe	66
2 l minus	44
2 l need	28
2 l number	-57
2 l of	-58
2 l only	-23
2 l order	22
2 l other	19
2 l out	-17
2 l paddock	-15
2 l panel	-51
2 l past	-25
2 l plan	-25
2 l quarter	42
2 l rack	-28
2 l ran	27
2 l replace	16
2 l sags	16
2 l see	35
2 l slope's	30
2 l so	20
2 l station	-15
2 l strike	-20
2 l swap	31
2 l takes	-54
2 l the	70
2 l then	-36
2 l there's	-69
2 l thing	-48
2 l took	30
2 l type	-24
2 l us	-22
2 l want	27
2 l wants	47
2 l was	40
2 l with	17
2 l zone	-45
2 l. #	26
2 l. 's	34
2 l. (	20
2 l. +	17
2 l. ,	25
2 l. -	-27
2 l. -ed	18
2 l. /	-27
2 l. 1	17
2 l. one	27
2 l. unit	-54
2 parts	45
2 r 	-19
2 r ,	-20
2 r -	-18
2 r 3	-17
2 r :	-31
2 r advil	-20
2 r after	-32
2 r against	22
2 r at	89
2 r bad	19
2 r bars	-20
2 r blinds	31
2 r by	-19
2 r came	24
2 r can	-23
2 r cement	-19
2 r connections	-16
2 r decks	20
2 r don't	37
2 r done	17
2 r doors	34
2 r extras	52
2 r faced	-17
2 r fall	38
2 r fifty	21
2 r five	24
2 r forty	22
2 r gang	-71
2 r guys	-37
2 r had	-20
2 r half	15
2 r hall	21
2 r helpers	-33
2 r high	21
2 r hinges	18
2 r homeruns	-30
2 r i	25
2 r if	32
2 r in	32
2 r is	-27
2 r kinds	-26
2 r ladders	16
2 r last	40
2 r lights	-28
2 r man	-23
2 r more	53
2 r need	16
2 r new	28
2 r niches	22
2 r o'clock	-21
2 r of	91
2 r one	-43
2 r or	41
2 r out	49
2 r panel	-42
2 r part	-58
2 r proud	21
2 r pulled	33
2 r put	-16
2 r rafters	16
2 r set	-25
2 r shakes	-17
2 r sides	-29
2 r slope	18
2 r so	23
2 r speeds	-16
2 r spots	-22
2 r stage	-34
2 r stakes	17
2 r stars	-24
2 r steps	-36
2 r strikes	-15
2 r studs	27
2 r sugars	-18
2 r the	-29
2 r then	-27
2 r there	24
2 r thirty	19
2 r three	-33
2 r to	49
2 r together	-27
2 r under	22
2 r usb	22
2 r ways	-20
2 r were	43
2 r where	18
2 r window	-36
2 r windows	33
2 r wrongs	-36
2 r x	-31
2 r. #	-19
2 r. ,	-20
2 r. -	-18
2 r. 1	16
2 r. :	-31
2 r. n't	29
2 r. one	58
2 r. word	26
20 figures 2	18
20 l ,	31
20 l -	-26
20 l .	-25
20 l 3	-20
20 l a	78
20 l and	34
20 l at	36
20 l be	34
20 l bogeyed	-21
20 l by	25
20 l ch	-24
20 l ckts	-20
20 l code	-27
20 l cut	20
20 l delta's	41
20 l dowels	19
20 l drew	-29
20 l error	-24
20 l every	58
20 l flat	46
20 l for	-40
20 l front	60
20 l gap's	-29
20 l go	26
20 l got	31
20 l head	18
20 l hearth's	34
20 l house	-32
20 l in	-57
20 l is	43
20 l it	16
20 l item	-18
20 l lad's	-22
20 l maybe	16
20 l me	-29
20 l need	22
20 l on	-21
20 l one	23
20 l packers	-20
20 l pier	-40
20 l plan	38
20 l plot	-16
20 l pulling	17
20 l r	-71
20 l read	15
20 l reading	22
20 l said	26
20 l seat's	-37
20 l set	41
20 l so	18
20 l span's	21
20 l sweet	-16
20 l tag	-29
20 l than	-35
20 l that's	-25
20 l then	49
20 l to	-46
20 l turned	-16
20 l turning	-19
20 l under	29
20 l used	28
20 l wants	-23
20 l was	-37
20 l your	-49
20 l. ,	31
20 l. -	-26
20 l. -ing	30
20 l. .	-25
20 l. 1	-20
20 l. letter	-66
20 l. one	19
20 l. unit	51
20 l. word	27
20 parts	28
20 r 	22
20 r -	-32
20 r .	32
20 r after	52
20 r at	21
20 r banksia	-20
20 r boards	15
20 r bucks	-48
20 r by	29
20 r c	-37
20 r centers	17
20 r doors	17
20 r down	-81
20 r each	21
20 r even	21
20 r five	-39
20 r going	-32
20 r had	19
20 r heads	17
20 r hot	-25
20 r i	17
20 r more	15
20 r ninety	-54
20 r ninth	-24
20 r no	32
20 r oc	23
20 r of	29
20 r off	-41
20 r on	26
20 r one	59
20 r out	33
20 r outta	23
20 r second	-27
20 r since	-29
20 r smokes	-21
20 r so	28
20 r then	-30
20 r times	-21
20 r toilets	33
20 r twelve	-18
20 r twenty	-17
20 r two	-36
20 r wafers	23
20 r we	21
20 r with	22
20 r. #	22
20 r. -	-32
20 r. -s	44
20 r. .	32
20 r. letter	20
20 r. one	-111
20 r. word	36
20 words round	-22
5 l 	35
5 l 
	-44
5 l ,	40
5 l :	20
5 l a	-37
5 l about	-33
5 l add	23
5 l after	-36
5 l all	22
5 l and	-34
5 l another	27
5 l apt	-32
5 l at	-59
5 l b	-17
5 l back	27
5 l bay	-36
5 l be	36
5 l bed	-24
5 l bldg	-34
5 l boring	-27
5 l bring	27
5 l brought	45
5 l by	-52
5 l class	-25
5 l code	-47
5 l cover's	16
5 l cut	16
5 l day	-46
5 l den	16
5 l dock	-21
5 l done	24
5 l door	-35
5 l down	42
5 l edge	15
5 l elevator	-21
5 l feeder	-19
5 l finished	-23
5 l five	-19
5 l flashes	-47
5 l flat	-35
5 l foot	23
5 l for	59
5 l found	19
5 l front	29
5 l full	29
5 l g	-18
5 l get	51
5 l gimme	85
5 l got	18
5 l has	32
5 l have	30
5 l he's	-16
5 l hole's	25
5 l hour's	-51
5 l house	-19
5 l hub	25
5 l is	28
5 l it	72
5 l its	-37
5 l kept	17
5 l kitchen	27
5 l knock	25
5 l ladder	-23
5 l leaves	37
5 l left	41
5 l level	-44
5 l line	-54
5 l loop	-40
5 l lp	-35
5 l lvl	-36
5 l make	18
5 l man's	-35
5 l me	23
5 l mode	-38
5 l necesito	40
5 l need	22
5 l no	-15
5 l not	49
5 l note	-26
5 l nozzle	-36
5 l number	-75
5 l of	-40
5 l on	47
5 l one	-16
5 l only	73
5 l or	16
5 l other	69
5 l out	48
5 l over	96
5 l p	-34
5 l pan's	17
5 l part	-30
5 l pin	-15
5 l plant	16
5 l profile's	25
5 l pulled	20
5 l pump	-20
5 l put	-21
5 l ratio's	49
5 l rolled	-38
5 l room	-46
5 l said	34
5 l says	17
5 l scaff	32
5 l set	24
5 l setting	-20
5 l sheet	-16
5 l shelf	-41
5 l short	68
5 l shot	-22
5 l sister	30
5 l slide	-44
5 l stage	-15
5 l still	49
5 l strike	-23
5 l switch	-38
5 l that	22
5 l the	-45
5 l then	-23
5 l there	-16
5 l throw	19
5 l till	-21
5 l took	24
5 l two	-17
5 l type	-25
5 l unit	-38
5 l up	20
5 l us	38
5 l use	22
5 l used	21
5 l wants	32
5 l was	59
5 l week	-15
5 l wet	17
5 l zone	-70
5 l. #	30
5 l. ,	40
5 l. -ing	-29
5 l. -s	81
5 l. /	-52
5 l. :	20
5 l. Name	-47
5 l. letter	-24
5 l. one	-78
5 l. unit	-73
5 r )	-40
5 r -	-33
5 r 2	25
5 r 3	-33
5 r 7	-27
5 r :	-24
5 r a	-21
5 r against	16
5 r and	25
5 r apart	67
5 r apiece	31
5 r arborvitae	16
5 r at	24
5 r back	37
5 r baths	22
5 r batts	-60
5 r bays	-30
5 r be	21
5 r blade	-58
5 r bricks	-16
5 r broken	22
5 r burner	-51
5 r but	33
5 r by	-36
5 r calls	-15
5 r came	-22
5 r closets	18
5 r corner	19
5 r corridor	-20
5 r crew	-16
5 r d	-15
5 r dimmers	26
5 r doors	-49
5 r dutchmen	24
5 r extra	49
5 r for	25
5 r four	-48
5 r gets	-19
5 r gone	-36
5 r guys	-21
5 r had	-17
5 r hall	16
5 r has	-20
5 r heads	22
5 r high	47
5 r hole	-29
5 r hooks	29
5 r in	51
5 r is	-66
5 r ish	-16
5 r just	58
5 r layers	19
5 r left	53
5 r lift	-26
5 r living	17
5 r loose	24
5 r more	55
5 r nail	16
5 r need	16
5 r not	-19
5 r number	25
5 r o'clock	-51
5 r of	101
5 r off	27
5 r outlets	15
5 r over	18
5 r parts	50
5 r per	56
5 r ready	-18
5 r receps	18
5 r refused	-27
5 r ring	-24
5 r says	-15
5 r screens	44
5 r shingles	-25
5 r should	23
5 r spaces	32
5 r square	-47
5 r stars	-21
5 r still	63
5 r strikes	-38
5 r ten	27
5 r the	-79
5 r then	-30
5 r they	36
5 r thick	22
5 r things	-20
5 r times	-67
5 r today	-30
5 r tomorrow	-41
5 r tries	55
5 r tripped	-23
5 r two	19
5 r under	-22
5 r walls	15
5 r way	-62
5 r went	27
5 r where	17
5 r will	48
5 r windows	16
5 r wire	-73
5 r with	-51
5 r x	28
5 r. )	-40
5 r. -	-33
5 r. -ing	24
5 r. -s	42
5 r. :	-24
5 r. n't	-25
5 r. one	-33
60 figures 2	16
60 l 	-20
60 l $	-29
60 l -	-58
60 l a	49
60 l about	-26
60 l around	52
60 l at	60
60 l be	18
60 l bin	-38
60 l breaker	-22
60 l bus	-21
60 l cold's	35
60 l cover	17
60 l do	-19
60 l door	27
60 l dynamic	21
60 l error	-21
60 l every	57
60 l exit	-16
60 l had	-47
60 l he's	-90
60 l height's	18
60 l house	71
60 l im	-24
60 l in	-26
60 l is	58
60 l it	-30
60 l left	-31
60 l limit's	-29
60 l lot	-21
60 l lts	15
60 l measure	-34
60 l meter's	15
60 l need	17
60 l net	-39
60 l new	-15
60 l not	38
60 l number	-60
60 l off	-17
60 l on	-18
60 l ones	42
60 l out	25
60 l plate	24
60 l po	-18
60 l r	-19
60 l rated	16
60 l reading	25
60 l rule	-27
60 l say	23
60 l says	24
60 l sch	-48
60 l serving	-16
60 l set	47
60 l sixty	-17
60 l slip	-16
60 l studio	-23
60 l talks	-35
60 l through	33
60 l to	25
60 l top	-25
60 l turned	-18
60 l up	-55
60 l vanity	21
60 l vikings	-21
60 l with	41
60 l x	30
60 l. #	-20
60 l. $	-29
60 l. 's	39
60 l. -	-58
60 l. -ing	36
60 l. one	-28
60 l. unit	55
60 l. word	30
60 parts	15
60 r .	38
60 r 2	19
60 r 50	-29
60 r :	-22
60 r a	25
60 r across	21
60 r again	-16
60 r all	26
60 r an	-35
60 r at	41
60 r batts	-24
60 r blades	30
60 r boards	15
60 r both	28
60 r bucks	-45
60 r down	78
60 r emer	15
60 r fifty	-45
60 r flat	15
60 r for	-26
60 r forty	-30
60 r front	44
60 r going	-63
60 r high	20
60 r in	-18
60 r is	-51
60 r modules	22
60 r no	-27
60 r nothing	-28
60 r now	-24
60 r oc	24
60 r of	28
60 r off	-24
60 r on	-73
60 r or	-24
60 r packers	-21
60 r right	-26
60 r second	-42
60 r seven	-20
60 r should	34
60 r so	36
60 r space	17
60 r square	32
60 r that	16
60 r the	-18
60 r then	40
60 r there	-29
60 r thick	17
60 r three	37
60 r voices	-24
60 r wide	26
60 r x	29
60 r. -s	-25
60 r. .	38
60 r. /	19
60 r. :	-22
60 r. letter	29
60 r. one	-84
60 r. word	52
60 words	24
99 figures 2	28
99 l 	-17
99 l $	-32
99 l -	25
99 l a	-19
99 l about	21
99 l an	-54
99 l are	-26
99 l at	52
99 l by	20
99 l for	-17
99 l got	-25
99 l headroom's	25
99 l height	38
99 l him	24
99 l humidity's	28
99 l it	-17
99 l job	-27
99 l not	-37
99 l of	-31
99 l only	16
99 l over	-25
99 l past	50
99 l psalm	-27
99 l rh	16
99 l roughly	33
99 l says	-32
99 l she's	-46
99 l sixteen	-18
99 l sleeper's	16
99 l square	-16
99 l static	44
99 l temp	20
99 l that	-35
99 l the	-17
99 l to	38
99 l under	54
99 l was	27
99 l we're	-22
99 l with	-18
99 l. #	-17
99 l. $	-32
99 l. 's	24
99 l. -	25
99 l. -ing	30
99 l. -ly	44
99 l. -s	-25
99 l. one	-54
99 l. unit	-29
99 l. word	26
99 parts	-18
99 r ,	42
99 r -	26
99 r a	-29
99 r an	-17
99 r and	-33
99 r billed	-15
99 r bucks	-38
99 r dynamic	22
99 r flowing	24
99 r is	-30
99 r lower	16
99 r next	-24
99 r out	42
99 r panhead	-29
99 r problems	-21
99 r rough	24
99 r so	34
99 r we're	-49
99 r. ,	42
99 r. -	26
99 r. -ing	24
99 r. -s	-35
99 r. unit	-20
999 0figures 4	-49
999 l 	-17
999 l $	-26
999 l ,	-23
999 l a	-17
999 l about	53
999 l amp	30
999 l and	72
999 l at	24
999 l count's	16
999 l door	-15
999 l every	26
999 l exit	-17
999 l extension's	-35
999 l for	27
999 l from	30
999 l go	-27
999 l going	46
999 l good	-18
999 l had	-22
999 l in	-44
999 l interpass	24
999 l invert's	34
999 l it	-20
999 l kid's	-27
999 l knocked	-25
999 l laid	29
999 l leg	49
999 l limit's	52
999 l neutral's	24
999 l no	39
999 l nobody's	-52
999 l number's	-63
999 l one	-28
999 l out	46
999 l pressure's	-41
999 l put	-40
999 l reading	23
999 l reads	28
999 l recirc	48
999 l rise	57
999 l riser	32
999 l rm	-43
999 l room	-46
999 l section	-28
999 l set	21
999 l shows	21
999 l since	-23
999 l spacing	20
999 l suction's	16
999 l suite	-30
999 l the	-86
999 l there	-37
999 l those	20
999 l to	28
999 l two	34
999 l two's	28
999 l voltage	72
999 l volts	28
999 l wall's	19
999 l wants	20
999 l was	-47
999 l. #	-18
999 l. $	-26
999 l. 's	31
999 l. ,	-23
999 l. -ed	-26
999 l. -ing	52
999 l. -s	70
999 l. 1	-24
999 l. unit	-33
999 oh	-43
999 parts	22
999 r ,	28
999 r -	-35
999 r .	27
999 r 555	-17
999 r a	-41
999 r above	26
999 r already	-36
999 r and	23
999 r area	-33
999 r base	38
999 r before	-16
999 r block	-27
999 r bucks	-31
999 r by	18
999 r centres	20
999 r common	36
999 r deep	16
999 r double	-28
999 r down	33
999 r end	19
999 r every	-32
999 r fives	-15
999 r for	-49
999 r give	42
999 r going	76
999 r he'll	-23
999 r head's	16
999 r high	29
999 r hinge	-19
999 r i	31
999 r limiter	40
999 r max	23
999 r more	16
999 r net	-44
999 r not	27
999 r number	-19
999 r of	64
999 r one	18
999 r over	-50
999 r return's	24
999 r so	-40
999 r the	28
999 r to	31
999 r today	25
999 r two	-15
999 r when	-16
999 r x	15
999 r. 's	49
999 r. ,	28
999 r. -	-35
999 r. -s	-22
999 r. .	27
999 r. 1	-42
999 r. Name	-23
999 r. letter	52
999 r. unit	-32
999 r. word	28
999 words	35
999 words round	42
9999 figures 4	-68
9999 figures 5	-21
9999 l 	-20
9999 l ,	-31
9999 l asking	-20
9999 l at	98
9999 l bath's	19
9999 l by	-20
9999 l ceiling's	20
9999 l deductible's	-31
9999 l for	-22
9999 l from	-30
9999 l had	52
9999 l hundred	-21
9999 l in	-16
9999 l is	-50
9999 l job's	-24
9999 l lintel's	29
9999 l switch	-16
9999 l the	-23
9999 l to	18
9999 l want	-40
9999 l was	46
9999 l x	38
9999 l. #	-20
9999 l. 's	31
9999 l. ,	-31
9999 l. -ing	-22
9999 l. letter	38
9999 l. one	-21
9999 r already	-18
9999 r in	-32
9999 r it'll	-34
9999 r long	33
9999 r maple	-23
9999 r off	20
9999 r on	28
9999 r side	-16
9999 r to	39
9999 r today	-16
9999 r. unit	-37
9999 r. word	-25
9999 words	-18
9999 words round	43
: head 0	29
: head none	33
@ head none	19
Name head none	-97
a a	-45
a aa	19
a about	-49
a above	27
a across	30
a act	-30
a acts	-29
a adds	-27
a adjustable	22
a advil	-20
a after	-22
a again	-49
a against	34
a ain't	22
a alarm	-22
a alder	-19
a all	-60
a along	21
a already	-20
a also	25
a am	-17
a amp	-17
a an	-88
a anchors	23
a and	45
a anodes	31
a another	-28
a anything	24
a apart	80
a apiece	31
a arborvitae	16
a are	35
a area	-19
a argue	-19
a arms	-18
a around	-18
a as	-44
a ask	-33
a at	18
a away	-30
a b	-42
a back	41
a backs	-16
a bad	23
a bag	31
a bags	17
a bales	-63
a ballasts	27
a balusters	-25
a banksia	-28
a base	44
a basket	-41
a bath	46
a bathroom	-39
a baths	30
a batts	-65
a be	55
a bears	-18
a bedroom	-25
a before	-15
a behind	33
a bends	22
a bent	18
a between	-25
a bifolds	25
a birch	-40
a bit	19
a black	51
a blade	-17
a blades	30
a blank	15
a blanks	27
a blew	-37
a blinds	16
a blocks	61
a blown	-17
a blue	-51
a boards	79
a bolt	19
a bolts	15
a bone	-18
a books	-32
a boot	-20
a boots	-28
a both	35
a bottom	58
a bought	51
a bracket	20
a braille	29
a brass	60
a break	-17
a brg	17
a bridge	-60
a bring	26
a broken	29
a bronze	31
a brought	26
a brown	18
a bucket	17
a bucks	-63
a built	-32
a bulbs	15
a burned	24
a burner	-51
a bushing	23
a business	-24
a bust	-23
a but	66
a buzz	24
a buzzer	-26
a by	25
a bye	-26
a c	-40
a cable	-59
a call	-32
a calling	-31
a came	32
a can	55
a can't	-28
a cans	37
a cant	-53
a caps	17
a carpet	-17
a carry	-43
a case	29
a cash	-24
a casing	30
a caulk	27
a cb	-24
a ceiling	26
a cells	32
a center	54
a centers	50
a centimeter	21
a centre	25
a centres	24
a chance	-17
a change	-37
a check	32
a chimney	27
a chipped	53
a chippy	-51
a circus	-23
a city	-17
a clamps	24
a clear	89
a client	-24
a clips	47
a clock	-25
a closed	45
a closet	37
a cm	-16
a coats	-16
a code	50
a color	-40
a come	-21
a comes	-21
a coming	62
a common	28
a complete	-35
a concrete	-40
a connections	-16
a contact	16
a corbels	-17
a cord	-19
a corner	52
a corners	16
a could	-19
a count	65
a country	-41
a crack	-37
a cracked	79
a creams	-15
a crew	-88
a crown	-16
a crows	-35
a cut	-15
a damaged	38
a dash	21
a day	-84
a days	-40
a de	66
a dead	27
a deck	-17
a decks	47
a deep	80
a degree	23
a degrees	-18
a dehu	25
a dentists	-97
a deny	-24
a desk	32
a diff	16
a dimmers	18
a dirt	17
a discharge	-26
a disposal	-51
a do	22
a doce	66
a dock	-25
a dollar	-57
a dollars	-20
a don't	-30
a done	-18
a doors	15
a dos	39
a dot	-49
a double	16
a down	-50
a dozen	-65
a drawer	-29
a drawing	20
a drew	-39
a drip	35
a driveway	-15
a driving	-32
a drop	26
a drops	22
a dryer	-26
a dump	53
a dumpster	-23
a dutchmen	24
a dynamic	22
a each	101
a easter	-29
a edge	43
a eggshell	36
a eights	19
a either	-39
a elbows	36
a eleven	-19
a eleventh	-48
a elm	-34
a elsewhere	18
a em	61
a emer	26
a ends	53
a enough	19
a euro	-82
a even	57
a every	62
a everybody	-37
a everywhere	-26
a except	31
a extra	40
a extras	52
a faced	-16
a faces	-27
a fair	-21
a fall	29
a falls	-30
a fan	-21
a far	73
a faucet	-15
a fault	-35
a feed	-28
a feet	-22
a few	26
a field	49
a fill	30
a filter	27
a find	-33
a fine	32
a fingers	-25
a fire	-17
a firebrick	38
a fit	44
a five	-20
a fix	-69
a fixed	-34
a flapper	-57
a flashing	41
a flat	44
a flex	-26
a flicker	35
a flow's	17
a flowing	35
a foam	-40
a fogged	28
a foot	60
a footers	47
a for	28
a form	30
a forty	-28
a forward	-36
a four	-33
a fourteen	64
a framed	-47
a fridays	-24
a front	35
a frost	-27
a ft	-35
a full	16
a furnace	-51
a g	26
a gal	-22
a gallon	-24
a game	-34
a gang	-57
a gary	22
a gasket	15
a gate	-46
a gauge	25
a get	-31
a gets	-26
a give	57
a glass	43
a glue	-29
a glued	-22
a go	60
a goat	-24
a goes	-26
a gone	-50
a gonna	16
a good	60
a grab	-17
a grade	35
a grate	-41
a grease	-20
a grille	-91
a grit	19
a ground	-28
a grout	47
a gun	-27
a guy	-31
a guys	-71
a had	-25
a haggles	-22
a hair	33
a hall	94
a hand	-19
a handed	15
a handle	-59
a hang	33
a hangers	68
a has	-91
a hauf	-19
a haul	-69
a have	30
a he	-75
a he'll	-17
a he's	-90
a head	-66
a head's	16
a heads	79
a heater	26
a heave	-22
a heavy	15
a height	24
a helpers	-33
a here	30
a high	118
a him	-60
a hinges	-33
a hire	-23
a hit	-30
a hits	17
a holds	17
a hole	-68
a hooks	22
a hot	21
a hours	-30
a house	16
a hr	-62
a hums	-59
a hundred	27
a hundreds	-24
a hung	-16
a hydro	-34
a i	-43
a i've	20
a id	-18
a idlers	56
a if	-16
a in	17
a inches	17
a inside	-25
a instead	32
a iron	-41
a is	-45
a ish	-19
a it	-35
a it'll	-33
a it's	-77
a joint	25
a juniper	-25
a just	33
a keep	23
a key	-45
a kid	-21
a kinds	-37
a kit	27
a kitchen	20
a knocked	-24
a l	29
a label	-17
a labeled	25
a ladder	-38
a ladders	16
a lady	17
a laid	21
a lamp	24
a landing	51
a larch	-21
a laser	52
a last	27
a late	-40
a later	21
a latest	-33
a laundromats	-22
a laundry	17
a lawsuit	-30
a lay	28
a layer	-71
a layers	19
a layout	25
a leave	28
a left	54
a leg	54
a legs	39
a length	34
a let	-16
a lid	22
a lift	-63
a light	31
a lights	-24
a like	-59
a lime	45
a limiter	40
a linear	19
a litre	27
a live	17
a living	26
a load	-16
a loaded	-29
a location	48
a lol	-63
a long	113
a longer	16
a look	-36
a lot	-50
a louvres	19
a love	-31
a lower	20
a lunch	-32
a mailbox	-29
a main	-20
a make	-39
a man	-35
a manifold	15
a manual	-30
a maple	-52
a masons	-15
a match	21
a mate	-33
a matt	27
a max	64
a me	-18
a medium	-52
a metal	-39
a meter	30
a metres	20
a middle	55
a midspan	16
a minimum	23
a minute	-36
a minutes	-32
a mm	21
a modules	22
a molding	-38
a monday	-21
a month	27
a more	86
a morning	-58
a mosaic	-19
a move	21
a moved	-63
a moves	-23
a muppet	-18
a my	17
a n	102
a nails	33
a need	31
a needs	-69
a net	-44
a never	-32
a new	-25
a next	-32
a niches	22
a night	-58
a nine	-37
a ninth	-26
a no	-30
a nobody's	-20
a noon	-43
a north	29
a nos	22
a nose	46
a not	-45
a nothing	-34
a nozzle	25
a nuts	-47
a o	-16
a o'clock	-88
a obscure	16
a oc	46
a oclock	-28
a of	27
a office	-44
a offset	-25
a oh	-19
a ok	-19
a old	47
a one	-20
a ones	19
a only	19
a open	21
a opener	-21
a opening	50
a opens	-28
a or	19
a order	51
a ordered	27
a ought	35
a ounce	27
a out	-34
a outlets	33
a outside	-18
a over	36
a pack	-16
a packers	-57
a paint	19
a painted	28
a painters	-20
a pan	20
a panel	-81
a panels	23
a panhead	-29
a park	-16
a part	-58
a parts	65
a pass	-25
a past	-84
a pattern	-73
a pavers	19
a per	55
a picked	19
a piers	23
a pies	64
a pine	37
a plan	42
a plate	41
a plates	38
a platform	-18
a platforms	63
a play	-32
a please	22
a plenty	53
a plinth	27
a plug	-26
a plumbers	-25
a plus	-19
a plywood	27
a pm	-31
a pocket	31
a podium	-65
a point	-24
a pool	-52
a pop	-21
a pops	20
a porch	18
a pound	-16
a power	-23
a pressure	23
a primer	32
a problems	-21
a proud	16
a punch	-19
a put	-30
a quart	27
a quid	-29
a quiet	-18
a quit	-35
a rack	19
a radiator	19
a radio	-106
a rafters	16
a raining	-40
a raise	43
a ran	39
a rang	-25
a range	-77
a rattle	22
a read	18
a reads	-17
a ready	-49
a rear	-16
a receps	17
a receptacle	15
a receptacles	23
a recirc	35
a reducer	28
a reducers	35
a refused	-27
a remain	17
a replaced	-21
a required	-25
a reset	-31
a rest	21
a return's	32
a rhythm	-60
a right	-30
a ring	42
a rise	20
a road	27
a roof	-34
a room	22
a ropings	-24
a round	16
a rub	44
a rubber	23
a run	24
a running	42
a runs	-19
a safe	39
a safety	-44
a said	-54
a saints	-42
a same	-19
a sand	29
a satin	16
a saying	-18
a says	-32
a scale	-16
a screen	29
a screens	44
a screwed	16
a screws	24
a sealed	28
a second	-22
a seeds	-32
a send	-15
a serving	-18
a set	-20
a seventeen	-16
a seventh	-16
a seventy	23
a sharp	-39
a she	27
a she's	-20
a shed	27
a sheets	23
a shelves	-20
a shift	-43
a shimmed	34
a shims	25
a shingles	-20
a short	90
a should	64
a shower	-34
a shows	-25
a shut	-21
a shy	-15
a side	37
a sides	-16
a siding	33
a signal	-20
a signed	-47
a silicone	-33
a sill	28
a sills	19
a since	-20
a sink	30
a sits	-17
a sixes	-19
a sixteen	110
a sixteenths	-16
a sixty	-22
a skip	-23
a skip's	-16
a slab	15
a slats	-28
a slope	52
a slow	-48
a smokes	-21
a so	45
a sockets	-24
a some	32
a something	-27
a sorry	-29
a space	19
a spacer	-26
a spaces	32
a spare	30
a spares	35
a speeds	-16
a split	-16
a spots	-31
a spout	15
a spraying	22
a spring	-41
a sprinkler	19
a square	-38
a st	-30
a stage	-34
a stair	-16
a stakes	18
a stars	-46
a start	-17
a started	-34
a starting	-21
a stay	-35
a steep	46
a step	-45
a steps	-15
a still	-36
a stock	25
a stone	-23
a stool	-42
a stops	-17
a straight	-32
a straps	19
a strikes	-51
a strings	36
a stud	17
a studs	84
a subcool	36
a submittal	15
a sugars	-28
a summer	-16
a sunday	-51
a superheat's	22
a supplier	-18
a supply	42
a sure	-17
a swapped	-29
a sweep	21
a switch	46
a tag	-19
a take	42
a tall	30
a tap	33
a tape	39
a taped	21
a tempered	23
a tens	16
a that	-39
a their	-18
a then	-34
a theres	18
a these	51
a they	-25
a they're	39
a they've	16
a thick	40
a thing	-102
a things	-30
a thirteen	24
a this	-51
a those	-21
a thousand	-29
a through	-26
a throughout	16
a thursday	-27
a tied	39
a ties	-19
a tighter	32
a tile	24
a tile's	45
a tiles	21
a time	-24
a times	-101
a timesheet	-24
a tip	-20
a to	35
a toe	-26
a together	-69
a toilet	29
a toilets	34
a too	-42
a took	-29
a top	19
a torn	-23
a torqued	-17
a total	39
a touch	-17
a towel	23
a travelers	-23
a tread	-44
a treinta	37
a tries	52
a tripped	-35
a trips	-17
a truck	26
a tub	21
a tube	34
a tubs	27
a tuesday	-41
a tune	-16
a turned	-29
a two	26
a twos	25
a type	88
a u	-20
a uncles	-15
a under	-25
a underside	21
a unit	-27
a until	29
a up	17
a us	-67
a usb	24
a use	16
a used	54
a v	-36
a vanity	-25
a vent	15
a vents	-19
a vinyl	16
a voicemails	-15
a voices	-24
a wafers	25
a walk	-17
a wall	49
a walls	31
a want	50
a was	-26
a washer	-18
a waste	46
a water	-55
a watt	33
a wax	-29
a way	-32
a ways	-16
a we	27
a wednesday	25
a weekend	47
a were	24
a what	22
a whatever	-40
a where	44
a which	29
a while	26
a white	26
a who	-17
a wi	-19
a wide	16
a will	57
a wind	-21
a window	-48
a windows	35
a wiped	-27
a wire	-71
a wire's	26
a wires	21
a woman	-15
a wood	-23
a work	36
a works	-29
a would	-23
a wouldn't	-123
a wrongs	-36
a x	67
a y	39
a yard	-89
a year	-34
a yesterday	16
a yet	-25
a you	-33
a you're	32
a zero	-16
a zip	-48
b a	-46
b about	27
b above	33
b absent	-49
b acid	-35
b across	36
b acts	-33
b add	77
b address	-17
b adds	40
b adhesive	20
b again	-25
b against	47
b air	33
b aisle	-17
b alarm	-30
b alarm's	-26
b allow	89
b alone	-27
b already	31
b alright	-18
b am	-19
b amp	86
b amps	92
b an	-43
b and	20
b another	-28
b any	19
b anything	29
b apart	61
b apiece	37
b apprentice	-54
b apt	-46
b aquastat	36
b architect	46
b are	69
b area	-18
b around	-34
b arrived	44
b as	35
b ask	-16
b asked	33
b asking	-20
b attic	-16
b away	19
b b	-59
b back	-19
b backfill	59
b badge	-60
b bakkie	-18
b bar	40
b bars	32
b basement	-50
b basin's	28
b batten	25
b battery's	-48
b bay	-57
b bays	-69
b bead	19
b beam	17
b bearing	-21
b bearings	56
b because	48
b bed	-48
b bedroom	-55
b bedrooms	-24
b before	-33
b belts	21
b beltway	-86
b bench	30
b bent	27
b bet	-22
b better	27
b between	-57
b bid	-44
b big	-72
b billed	-24
b bin	-37
b birdied	-22
b birds	-15
b black	42
b blacks	-31
b blast	25
b bldg	-37
b blew	15
b blinds	18
b blood	-75
b blow	46
b blower	25
b blown	-20
b board's	-16
b boards	42
b bogeyed	-21
b bolts	42
b bond's	-20
b book	19
b booked	-41
b boring	-27
b boss	-37
b both	-32
b bottom's	17
b bought	54
b bout	35
b box	-28
b bracket	-27
b bracket's	-32
b brackets	31
b break	16
b breaker	-53
b breaker's	59
b breakers	35
b bring	112
b bringing	24
b broke	113
b bronze	16
b brought	83
b brushed	-21
b bucket	-16
b building	-36
b built	-27
b bulb	20
b bump	29
b bundles	88
b bunnings	-19
b burned	41
b bus	-24
b busted	-30
b but	31
b buy	66
b buzz	60
b by	-19
b call	34
b calls	31
b cam	-48
b came	85
b camera	-25
b can	25
b can't	-22
b cans	24
b capacitor's	21
b caps	23
b card	15
b carpet	-23
b carton	19
b cases	30
b casing	-26
b cat	-22
b caulk	-26
b cause	19
b cbd	16
b ceiling's	20
b cell	-27
b center	36
b cfm	47
b ch	-34
b changed	40
b channel	-53
b charge	-44
b charged	-55
b charging	-29
b chelsea	-16
b chimney	-27
b chlorine's	50
b choir's	-40
b cinco	28
b circuit	-74
b ckts	-44
b claim's	-24
b class	-41
b cleaned	31
b cleanouts	15
b clear	15
b clips	34
b close	39
b closer	30
b closes	-46
b coat	-25
b code	-47
b code's	-59
b cold	36
b cold's	35
b collar	31
b color	-21
b colour	-21
b column	-40
b come	19
b coming	-17
b compacted	30
b compaction's	21
b control	40
b corner	49
b correction	16
b corta	77
b count's	39
b counted	-41
b counter	-70
b counter's	44
b counts	46
b cover	45
b cover's	70
b covers	17
b cr	-16
b cracked	41
b crane's	-33
b crowned	27
b curb's	30
b curtain's	-23
b curve	21
b customer	-29
b cut	105
b cylinder	18
b damper	18
b dash	-33
b date	-16
b dates	-19
b day	-73
b days	39
b deal	-42
b deck	21
b deductible's	-31
b deep	15
b degrees	20
b delta's	41
b den	43
b desk	-42
b detail	-16
b diagonals	79
b dialed	23
b didn't	-24
b digits	-55
b dimmers	57
b dining	-16
b dip	-32
b dirt	33
b dispenser	22
b display	-61
b do	-54
b doc	-16
b dock	-21
b doing	-57
b don't	-43
b door	-70
b doors	-33
b dos	45
b double	-26
b dowel	32
b dowels	19
b down	43
b downstairs	16
b draft's	47
b draw	30
b drawer	-51
b drawing	27
b draws	29
b drew	-29
b drop	71
b drop's	17
b drops	41
b drove	18
b dry	60
b dryer	-16
b drywall	-47
b drywall's	28
b dump	17
b dumpsters	40
b dwangs	16
b dynamic	21
b e	-22
b each	69
b east	-18
b edge	38
b egress	-21
b eight	23
b eighteen	21
b eighth	21
b eighths	55
b eighty	-18
b elbows	23
b electrician	-28
b elevation	-25
b elevator	-75
b em	-36
b embed	43
b emt	22
b end	26
b end's	-36
b ended	39
b ends	-35
b epoxy	-41
b error	-50
b every	20
b exam	-23
b except	20
b exit	-58
b expansion	15
b expires	-90
b exposure's	60
b extension	-22
b extension's	-35
b exterior	-43
b eyes	-32
b fall's	17
b falls	-40
b far	24
b fault	-21
b feeder	-19
b feeder's	-16
b feeding	21
b feeds	-18
b feet	30
b fell	50
b field	-32
b fifteen	72
b figure	38
b filter	18
b final	-20
b finished	-22
b first	44
b fitted	-16
b fix	-28
b fla	19
b flange	16
b flashes	-105
b flat	-50
b flew	-16
b flight	-56
b flights	-23
b floor	-28
b floor's	20
b flowing	57
b flue	32
b foot	19
b footer	-25
b footers	22
b footing's	30
b footy's	-15
b form	27
b forty	20
b found	52
b four	33
b fourteen	47
b fourth	-55
b framing	-22
b friday	-21
b from	-16
b front	38
b ft	21
b g	-34
b gal	-16
b gallons	-39
b game	-18
b gap	22
b gap's	-20
b garage	68
b gas	-58
b gasket	18
b gate	-84
b gates	25
b gauge	37
b gauged	20
b gave	45
b generator	58
b get	76
b gets	76
b gimme	89
b give	-51
b gives	-36
b glue	36
b go	18
b goal	-36
b goin	-19
b good	16
b got	19
b gotta	23
b gr	40
b grab	36
b grabbed	17
b grade's	16
b gray	-29
b green	-38
b grille	19
b grit	35
b grout's	63
b gutter's	-22
b guy	26
b guys	-31
b half	35
b hall	38
b hallway	20
b handrail's	30
b hangers	34
b hank	-24
b happy	-90
b hard	17
b hardware	-38
b has	57
b hatch	-37
b haul	-66
b have	40
b he	-107
b he'll	-26
b he's	-172
b head	57
b head's	36
b header	37
b header's	46
b headroom's	38
b hearth's	34
b heater	-16
b height	38
b height's	31
b held	41
b her	19
b here	-49
b hes	-56
b high	63
b him	-72
b hinge	23
b hinges	-41
b his	-65
b hit	-41
b hits	27
b hockey	18
b hole	-33
b hole's	66
b holes	20
b holiday	-16
b hood	18
b hook's	19
b hour	-53
b hour's	-98
b hours	-38
b how	30
b hub	24
b humidity	52
b humidity's	34
b hundred	34
b hung	59
b hwy	-33
b i	26
b i'd	29
b if	38
b im	-61
b in	-42
b inch	40
b inches	30
b inlet's	30
b innings	-17
b inside	39
b inspector	-51
b install	-35
b instead	17
b insulation	-16
b interpass	24
b invert's	34
b invoice	-46
b ipad's	-38
b is	-16
b island	52
b it	30
b it'll	20
b it's	-58
b item	-33
b items	-31
b its	-17
b j	25
b jack's	18
b jan	26
b job	-47
b job's	-24
b joint	-16
b joists	40
b jumper	-88
b just	104
b k	-22
b kangaroos	-15
b keep	58
b kept	23
b key	-54
b keyed	-36
b keys	-44
b kick	24
b kicks	107
b kid	-48
b kid's	-32
b kids	70
b kind	38
b kit	16
b kitchen	57
b kits	21
b knees	-27
b knocked	-26
b knots	34
b kpa	40
b l1	-17
b l2	-21
b laborer	15
b lad's	-22
b ladder	-22
b ladder's	-24
b laid	49
b landing	30
b lands	-44
b lap	104
b lb	25
b least	63
b leaves	83
b led	17
b left	34
b leg	76
b lengths	19
b less	39
b let	-18
b level	-85
b lid	-15
b lifted	35
b light	-43
b lights	43
b lime	18
b limit's	33
b line	-49
b lintel	21
b lintel's	29
b litres	25
b little	-29
b load's	-24
b loads	-18
b lockbox	-18
b locked	-29
b locker	-17
b lol	-19
b long	-80
b longer	-16
b look	-40
b loop	-39
b loose	41
b lost	22
b lot	-97
b lounge	49
b low	52
b lp	-35
b lp2	-44
b lts	15
b lumber	-19
b lumber's	-38
b lunch	-18
b lvl's	41
b m	-49
b made	-41
b make	94
b makes	-15
b man	-25
b man's	-35
b marble	30
b mark	-41
b marked	-37
b married	-20
b materials	-53
b max	32
b maximum	39
b maybe	49
b mc	20
b me	34
b mean	-19
b meant	18
b measure	-24
b measured	23
b measures	-24
b medallion	19
b medium	50
b meeting	-18
b meter	31
b meter's	15
b metered	26
b mil	27
b mile	-22
b mils	18
b min	16
b minus	30
b minute	22
b minutes	-28
b mirror	23
b mirror's	27
b missing	38
b mix	56
b mixed	40
b mm	32
b mock	-19
b mode	-38
b modules	23
b moisture	76
b moisture's	36
b mon	-37
b moon	-16
b more	39
b morning	47
b move	31
b moved	-88
b mrs	-36
b mud	-54
b must	34
b my	-84
b nail	31
b nailed	21
b nails	29
b near	-17
b necesito	66
b need	98
b needs	75
b net	-39
b neutral's	24
b new	-16
b next	-56
b nine	-25
b nineteen	-58
b nineteen's	26
b ninth	-23
b no	42
b nobody	-50
b nobody's	-52
b none	40
b north	23
b note	-52
b nothing	50
b now	71
b nozzle	-36
b number	-153
b number's	-98
b nursery	23
b oak	15
b ocean's	-33
b of	51
b off	-33
b offered	-73
b office	-35
b offset	18
b oh	-46
b ohm	35
b ohms	56
b oil	-34
b okay	-42
b old	-46
b ones	28
b only	85
b opening	35
b opening's	23
b opens	-34
b or	-24
b ordered	59
b ot	-19
b ought	17
b our	-51
b out	25
b out's	18
b outta	-15
b oven	20
b overhang's	22
b owe	-26
b owes	-16
b owner	-20
b owns	-22
b p	-44
b pack	-56
b packed	25
b packers	-20
b packs	73
b pad	26
b paddock	-15
b padlock's	-30
b page	-26
b paid	-26
b paint	-28
b paint's	-18
b painted	-35
b pan's	18
b panel's	20
b paper	-25
b par	-17
b parks	-22
b part	-49
b passed	-30
b past	-35
b patch	23
b pavers	24
b pay	-19
b pcs	-59
b percent	26
b permit	-32
b ph	23
b phase	-23
b phone	-30
b phone's	-30
b pick	46
b picked	-15
b pickets	108
b pieces	26
b pier	-39
b pies	-27
b pin	-79
b pipe	47
b pipe's	18
b pitch	21
b pitched	-20
b place	-32
b plan	21
b plans	61
b plant	25
b plastic	-19
b plates	19
b please	51
b plinth	31
b plot	-19
b plus	69
b po	-38
b point	-67
b pole	-30
b poly	-20
b pool	-24
b popped	-39
b port	-18
b pounds	46
b pour	-32
b poured	26
b power's	-25
b powerball	-17
b preheat	24
b prob	23
b profile's	25
b prv's	38
b psalm	-28
b pu	18
b pull	36
b pulled	-51
b pulling	44
b pulls	28
b pumped	70
b purlins	36
b put	58
b puts	30
b qty	59
b quarter	-31
b quiet	-17
b quit	-33
b quoted	-27
b r	-39
b race	-35
b rack	-65
b radio's	-16
b rafters	50
b rail	22
b rail's	37
b raise	62
b range	43
b rapid	-26
b rate's	-20
b rated	16
b rather	-15
b ratio's	87
b rcbo	17
b rcbo's	21
b re	-16
b read	49
b reading	57
b reads	82
b rebar's	26
b recirc	48
b red	-24
b redid	-19
b register's	38
b relief	48
b rental	-52
b replace	52
b report	-26
b return	64
b return's	35
b returned	35
b rev	24
b reveal's	37
b rfi	-18
b rh	31
b right	-67
b ring	-26
b rip	32
b rise	79
b riser	-36
b rm	-92
b rock	41
b rod	27
b rod's	21
b roll	-20
b rolled	-37
b rolls	-38
b roof	-20
b room	-49
b rotors	-23
b rough	16
b roughed	20
b roughly	33
b round	-57
b row	-41
b rtu	-82
b run	39
b running	17
b runs	21
b s	20
b safe	-54
b sags	19
b said	15
b same	-22
b sand	-22
b sat	18
b saturday	-41
b saves	-16
b saying	26
b says	20
b scaff	32
b scale	-79
b sch	-39
b screen	15
b screws	19
b seal	-27
b seat	26
b seat's	-37
b section	-46
b send	-33
b sent	75
b service	17
b serving	-16
b set	151
b sets	-66
b setting	-24
b seventy	81
b shave	38
b she	-54
b she'll	-68
b she's	-84
b shedding's	-28
b sheet	-54
b sheets	38
b shell's	-31
b shellac	37
b shelves	36
b shelving	-46
b shift	-19
b shift's	-27
b shld	21
b shop	-17
b short	87
b shorted	72
b shot	21
b should	83
b should've	53
b shower	-41
b shows	69
b side	49
b sign's	29
b silicone	34
b sill	49
b sill's	52
b since	-80
b siri	-23
b sister	46
b site	-31
b six	43
b sixteen	15
b sixteenth	-44
b sixty	54
b skirting	-21
b slab	54
b slab's	44
b sleeper's	16
b slip	-16
b slope's	30
b slump	103
b smokes	-28
b smoking	-34
b smoko	-46
b snake	-32
b snow	20
b so	28
b soft	24
b sold	72
b solid	-29
b some	29
b somebody	64
b someone	-16
b something	-24
b sometime	-68
b somewhere	96
b sorry	19
b space	22
b spaced	63
b spacing	52
b span's	22
b spare	26
b spec	56
b sphere	48
b splash	16
b spot	-18
b spring's	-25
b squad	-15
b squares	35
b squeak	32
b stack	31
b stage	-33
b stainless	23
b stair	-30
b stairs	-18
b stairwell	15
b standing	18
b start	-39
b started	-58
b starter	25
b starting	-41
b starts	-23
b stat	19
b stat's	22
b static	109
b static's	51
b station	-22
b steel	22
b stem	35
b step	-31
b step's	44
b steps	-20
b sticks	44
b stirrups	76
b stitch	-16
b stock	24
b stock's	-28
b stone	32
b strip	-24
b strips	29
b stub	30
b stud	19
b studio	-23
b studs	64
b stuff	44
b sub	-23
b sub's	-18
b subcool	52
b subcool's	21
b subfloor	37
b subfloor's	21
b suction's	22
b suite	-37
b summer	-30
b superheat	29
b superheat's	48
b supply	40
b supply's	48
b swap	35
b sweet	-16
b swing	-29
b table	-99
b tag	-43
b tagged	-19
b take	-17
b takes	-26
b talks	-35
b tap	44
b team's	-48
b temp	84
b tempered	16
b ten	-28
b tenant	-26
b terms	-68
b test	-44
b tested	48
b th	-33
b than	33
b that	-26
b that'll	-21
b that's	-58
b the	-17
b their	-38
b them	16
b then	-41
b thermostat's	51
b they	-42
b they'll	-42
b they're	-89
b they've	-19
b thick	35
b thin	71
b thing	-26
b think	-16
b thinks	-23
b third	-24
b thirteen	56
b this	-48
b those	23
b though	25
b thousand	-39
b three	27
b throat's	55
b through	-32
b throw	45
b throwing	-27
b throws	-40
b thurs	-18
b thursday	-21
b ticket	-29
b tide's	-47
b tie	28
b ties	32
b tight	18
b til	-48
b tile	31
b till	-34
b time	-39
b times	-55
b tires	-32
b to	43
b toast	17
b toilet	44
b tomorrow	-54
b ton	27
b too	20
b toolbox	-19
b top	-34
b torque	54
b total	27
b touch	27
b tracking	-17
b trailer	-48
b trap	26
b tray	26
b tread	-48
b treads	29
b trim	32
b trimmed	23
b tripped	-28
b tripping	23
b truck's	-73
b tune	-83
b turned	-50
b turning	-19
b turns	-17
b twenty	57
b two	24
b txt	-23
b type	-101
b u	-89
b under	15
b unit	-108
b upsize	36
b upstairs	46
b upstand's	34
b use	41
b used	85
b utility	-17
b v	-21
b valve	64
b van	52
b vanity	48
b vent	35
b vikings	-40
b voices	-16
b voltage	75
b volts	43
b voted	-24
b wait	17
b waiting	23
b walk	-33
b wall	70
b wall's	35
b wallpaper	-17
b walnut	-39
b want	39
b wanted	38
b wants	57
b wardrobe	-57
b was	35
b wash	-35
b water's	33
b way	-44
b we	33
b we're	-51
b we've	19
b wednesday	-27
b wee	-35
b week	-32
b well	25
b wet	67
b what's	-40
b when	28
b where	24
b which	-17
b who's	-61
b wide	53
b width	25
b window	-58
b windows	21
b wire's	37
b with	37
b won't	26
b wood	-28
b wood's	15
b work	-23
b works	-16
b would	24
b wound	18
b wrong	-18
b x	54
b yard	-18
b years	-38
b your	-38
b zero	-60
b zone	-71
b zz	-29
b ×	30
bare 0	-16
bare 1	-59
bare 2	51
bare 3	30
behind area area	21
behind area crews'	-69
behind area defect	-18
behind area end	29
behind area mark	-86
behind area part	-42
behind area plain	-38
behind break mark	-106
behind crews' area	-20
behind crews' end	-61
behind crews' finish	-17
behind crews' material	58
behind crews' number	29
behind crews' part	46
behind crews' plain	17
behind crews' strange	53
behind crews' surface	36
behind crews' unknown	-50
behind defect crews'	-22
behind defect others'	-16
behind defect plain	43
behind end area	-35
behind end crews'	22
behind end defect	117
behind end finish	-54
behind end fixture	31
behind end mark	-84
behind end material	34
behind end others'	-17
behind end part	66
behind end plain	37
behind end strange	-52
behind end verb	-60
behind finish area	-19
behind finish end	-26
behind finish mark	-33
behind finish verb	21
behind fixture defect	-29
behind fixture end	-39
behind fixture others'	-19
behind fixture verb	-23
behind mark break	-24
behind mark crews'	44
behind mark defect	21
behind mark end	-21
behind mark finish	17
behind mark fixture	46
behind mark mark	-64
behind mark number	46
behind mark part	53
behind mark surface	-33
behind mark unknown	38
behind material fixture	-42
behind material others'	30
behind material plain	33
behind material unknown	47
behind number end	-33
behind number number	-43
behind number unknown	-20
behind others' end	75
behind others' mark	105
behind others' material	21
behind others' others'	17
behind others' part	-42
behind others' plain	42
behind others' role	-28
behind others' surface	-49
behind others' unknown	-34
behind part defect	-52
behind part material	-20
behind part plain	-46
behind part verb	-18
behind plain area	60
behind plain crews'	23
behind plain defect	44
behind plain end	39
behind plain finish	23
behind plain mark	62
behind plain material	63
behind plain number	19
behind plain part	28
behind plain strange	-45
behind plain surface	21
behind plain tool	17
behind plain unknown	15
behind role crews'	60
behind strange crews'	-21
behind strange mark	25
behind strange plain	-22
behind strange strange	-21
behind surface crews'	-17
behind surface defect	-34
behind surface end	57
behind surface fixture	27
behind surface others'	-18
behind surface part	-39
behind surface plain	-35
behind surface surface	21
behind tool end	-69
behind tool plain	-59
behind unknown end	-106
behind unknown mark	-65
behind unknown material	-36
behind unknown number	-45
behind unknown others'	-52
behind unknown part	-29
behind unknown plain	-48
behind unknown verb	45
behind verb crews'	-70
behind verb material	-22
behind verb others'	-33
behind verb part	-20
behind verb plain	-34
behind verb strange	-18
behind verb verb	-20
claims 2	-48
counted head area	59
counted head crews'	15
counted head finish	-15
counted head fixture	56
counted head material	116
counted head others'	-157
counted head part	126
counted head plain	-57
counted head role	-52
counted head strange	-103
counted head surface	44
counted head tool	53
counted head verb	-28
counted next defect	43
counted next fixture	34
counted next mark	-65
counted next material	61
counted next others'	-26
counted next part	39
counted next role	-53
counted next strange	-64
counted next surface	-18
counted next tool	40
counted next work	-32
form 0figures 4	-54
form figures 2	39
form figures 4	-68
form figures 5	-43
form oh	-43
form parts	55
head 1	42
head 2	27
head 3	48
head none	-17
l of cars	-42
l of clock	-93
l of kin	-36
l of money	-59
l of papers	-37
l of past	26
l of phones	-49
l of roads	-109
l of school	-67
l of services	-27
l of sport	-43
l1 	30
l1 
	-98
l1 "	36
l1 #	-24
l1 $	-91
l1 (	21
l1 +	47
l1 ,	50
l1 -	-65
l1 3	-16
l1 :	65
l1 @	20
l1 a	25
l1 about	31
l1 add	62
l1 adds	40
l1 after	-47
l1 against	34
l1 aisle	-17
l1 all	72
l1 allow	42
l1 amp	30
l1 an	-67
l1 and	88
l1 another	-24
l1 apartment	-26
l1 apt	-46
l1 are	31
l1 around	-29
l1 asking	-20
l1 at	20
l1 b	-28
l1 backfill	59
l1 bars	26
l1 bath	-79
l1 bath's	19
l1 bay	-100
l1 be	85
l1 beam	34
l1 bed	-50
l1 bedroom	-80
l1 been	34
l1 before	-29
l1 between	-21
l1 big	-58
l1 bin	-38
l1 birds	-15
l1 bldg	-33
l1 bogeyed	-21
l1 boring	-27
l1 bottom	-37
l1 bottom's	17
l1 bought	76
l1 bout	35
l1 box	-16
l1 bracket	23
l1 breaker	-70
l1 bring	109
l1 broke	24
l1 brought	73
l1 building	-41
l1 bus	-24
l1 but	38
l1 buy	90
l1 by	25
l1 called	-16
l1 can	30
l1 cat	-27
l1 ceiling's	20
l1 ch	-34
l1 change	27
l1 channel	-43
l1 charging	-29
l1 cinco	25
l1 circuit	-91
l1 ckts	-20
l1 class	-30
l1 closet	39
l1 coat	-35
l1 code	-93
l1 code's	-53
l1 cold's	35
l1 correction	16
l1 corta	37
l1 count's	26
l1 counter	-17
l1 cover's	53
l1 cr	-16
l1 crowned	26
l1 cut	48
l1 day	-104
l1 deductible's	-31
l1 delta's	41
l1 den	16
l1 dirt	22
l1 do	-18
l1 dock	-21
l1 doing	-16
l1 done	20
l1 door	-48
l1 double	-39
l1 dowels	19
l1 drawer	-45
l1 drew	-28
l1 drops	36
l1 drove	19
l1 dynamic	21
l1 e	-21
l1 each	-37
l1 edge	30
l1 eight	-17
l1 elevator	-23
l1 eleven	-26
l1 embed	43
l1 end's	-31
l1 error	-50
l1 every	30
l1 exit	-67
l1 expires	-50
l1 exposure's	60
l1 extension's	-35
l1 exterior	-24
l1 eyes	-32
l1 f	-19
l1 fall's	17
l1 falls	-22
l1 fault	-23
l1 feeder	-19
l1 fell	47
l1 finished	-23
l1 first	-15
l1 fit	18
l1 five	-36
l1 fla	19
l1 flashes	-70
l1 flat	-46
l1 floor	-56
l1 foot	27
l1 forward	55
l1 found	57
l1 four	-46
l1 fourteen	-38
l1 from	-35
l1 front	32
l1 full	48
l1 g	-18
l1 gap's	-16
l1 garage	66
l1 gate	-28
l1 get	148
l1 gets	59
l1 gimme	89
l1 going	46
l1 gone	-23
l1 good	-34
l1 got	125
l1 grab	63
l1 grade	-33
l1 half	-15
l1 hall	57
l1 has	104
l1 have	64
l1 he's	-104
l1 head	18
l1 headroom's	25
l1 hearth's	34
l1 height	38
l1 height's	22
l1 hinges	17
l1 hit	-24
l1 hole	-62
l1 hole's	27
l1 homeruns	17
l1 hour's	-51
l1 house	-16
l1 hub	25
l1 humidity's	29
l1 hundred	-21
l1 hung	40
l1 hwy	-19
l1 i'm	-24
l1 im	-25
l1 in	-74
l1 inch	65
l1 install	-30
l1 interpass	24
l1 invert's	34
l1 invoice	-27
l1 is	60
l1 it	80
l1 it's	-57
l1 item	-28
l1 items	-18
l1 its	-15
l1 job	-36
l1 job's	-24
l1 jumper	-32
l1 just	94
l1 kept	44
l1 key	-62
l1 kid's	-27
l1 kitchen	30
l1 knock	25
l1 knocked	-25
l1 laborer	60
l1 lad's	-22
l1 ladder	-23
l1 laid	29
l1 landing	29
l1 lap	49
l1 last	24
l1 least	63
l1 leaves	78
l1 left	30
l1 level	-58
l1 like	-28
l1 limit's	33
l1 line	-80
l1 lintel	17
l1 lintel's	29
l1 long	-61
l1 longer	-16
l1 loop	-40
l1 lost	25
l1 lot	-95
l1 low	17
l1 lp	-35
l1 lts	15
l1 lvl	-36
l1 m	-31
l1 make	18
l1 makes	-15
l1 man's	-35
l1 mark	-34
l1 maybe	99
l1 me	44
l1 meant	19
l1 measure	-33
l1 measured	21
l1 meter's	15
l1 minus	31
l1 mm	-36
l1 mode	-38
l1 moisture	32
l1 nd	-21
l1 necesito	40
l1 need	140
l1 needs	58
l1 net	-40
l1 neutral's	24
l1 new	-89
l1 nine	-21
l1 nineteen	-16
l1 no	-16
l1 nobody's	-52
l1 not	50
l1 note	-52
l1 now	40
l1 nozzle	-36
l1 number	-213
l1 number's	-91
l1 ocean's	-33
l1 of	-40
l1 off	-16
l1 offered	-25
l1 oh	-43
l1 old	-81
l1 on	-24
l1 one	-30
l1 ones	56
l1 only	85
l1 opened	-17
l1 or	-30
l1 order	22
l1 ordered	20
l1 other	-21
l1 ought	-16
l1 out	98
l1 outta	-15
l1 overhang's	22
l1 owns	-22
l1 p	-46
l1 packers	-20
l1 paddock	-15
l1 page	-22
l1 pan's	16
l1 panel	-23
l1 panel's	20
l1 part	-30
l1 past	-26
l1 pier	-40
l1 pin	-25
l1 plant	25
l1 plate	26
l1 plot	-19
l1 plus	68
l1 po	-18
l1 port	-18
l1 poured	18
l1 pressure's	-29
l1 profile's	25
l1 psalm	-28
l1 pull	50
l1 pulled	15
l1 pulling	39
l1 pump	-20
l1 put	41
l1 quarter	73
l1 quoted	-21
l1 r	-70
l1 rack	-32
l1 ran	46
l1 rate's	-20
l1 rated	40
l1 ratio's	49
l1 read	47
l1 reading	45
l1 reads	58
l1 recirc	48
l1 red	37
l1 replace	24
l1 replaced	36
l1 return	16
l1 returned	18
l1 reveal's	19
l1 rfi	-18
l1 rh	23
l1 right	-51
l1 rise	57
l1 riser	-29
l1 rm	-97
l1 rolled	-38
l1 room	-91
l1 roughly	33
l1 row	-26
l1 rtu	-19
l1 rule	-27
l1 run	36
l1 running	17
l1 sags	16
l1 saves	-16
l1 say	28
l1 says	42
l1 scaff	32
l1 sch	-48
l1 seat's	-37
l1 second	-20
l1 section	-36
l1 see	47
l1 sent	36
l1 serving	-16
l1 set	54
l1 setting	-20
l1 shave	38
l1 she's	-54
l1 sheet	-54
l1 shelf	-41
l1 short	61
l1 shower	-17
l1 shows	37
l1 side	19
l1 since	-42
l1 sister	30
l1 six	32
l1 sixteen	-20
l1 sixty	-17
l1 sleeper's	16
l1 slide	-44
l1 slip	-16
l1 slope's	30
l1 so	89
l1 solid	-28
l1 spacing	20
l1 span's	22
l1 spec	25
l1 squad	-15
l1 square	-45
l1 stack	17
l1 stage	-33
l1 stair	-30
l1 starter	25
l1 static	58
l1 static's	29
l1 station	-22
l1 step	-40
l1 still	60
l1 stone	37
l1 strike	-44
l1 studio	-23
l1 subcool	32
l1 suction's	16
l1 suite	-35
l1 superheat's	16
l1 swap	39
l1 sweet	-16
l1 switch	-54
l1 table	-18
l1 tag	-29
l1 take	40
l1 takes	-27
l1 talks	-35
l1 temp	28
l1 ten	-21
l1 th	-15
l1 than	32
l1 that	-74
l1 that's	-21
l1 the	-111
l1 them	-30
l1 then	-20
l1 there	-31
l1 thing	-41
l1 this	-24
l1 throat's	55
l1 throw	45
l1 til	-45
l1 till	-50
l1 to	63
l1 tomorrow	16
l1 took	70
l1 top	-17
l1 tread	-42
l1 truck	-56
l1 turned	-33
l1 turning	-19
l1 twelve	-31
l1 two	20
l1 two's	28
l1 type	-68
l1 under	98
l1 unit	-136
l1 up	37
l1 us	51
l1 use	36
l1 used	89
l1 vanity	30
l1 vikings	-21
l1 voltage	72
l1 volts	28
l1 wall	29
l1 wall's	26
l1 want	63
l1 wanted	21
l1 wants	42
l1 was	79
l1 we're	47
l1 well	35
l1 wet	17
l1 wide	17
l1 with	23
l1 x	99
l1 you	-23
l1 your	-51
l1 zone	-122
l1 £	-43
l1 ×	30
l1. "	36
l1. #	27
l1. $	-91
l1. 's	96
l1. (	21
l1. +	47
l1. ,	50
l1. -	-65
l1. -ed	59
l1. -ing	28
l1. -ly	56
l1. -s	72
l1. /	-89
l1. 1	-64
l1. :	65
l1. @	20
l1. Name	-97
l1. letter	-55
l1. one	-113
l1. unit	-55
l1. £	-43
l2 	-15
l2 
	20
l2 '	50
l2 (	40
l2 ,	24
l2 1	-69
l2 11	41
l2 118	-20
l2 1700	15
l2 18	-26
l2 180	37
l2 2	16
l2 31	-18
l2 34	21
l2 4	-26
l2 400	-30
l2 47	-37
l2 555	-17
l2 6	-61
l2 60	20
l2 600	38
l2 68	63
l2 9	21
l2 95	-36
l2 a	-129
l2 acts	-33
l2 again	-43
l2 against	16
l2 all	-25
l2 allow	61
l2 already	19
l2 amps	18
l2 an	-39
l2 and	23
l2 anything	22
l2 apartment	29
l2 apprentice	-47
l2 aquastat	32
l2 architect	27
l2 are	15
l2 asked	26
l2 at	-100
l2 away	24
l2 back	-25
l2 basement	29
l2 battery's	-48
l2 be	36
l2 bedroom	15
l2 been	-20
l2 bench	22
l2 bet	-22
l2 billed	-24
l2 black	36
l2 blacks	-35
l2 blast	25
l2 block	22
l2 blood	-41
l2 bolts	19
l2 bond's	-20
l2 booked	-16
l2 boss	-26
l2 bottom	18
l2 box	27
l2 boxes	44
l2 bracket	33
l2 breaker's	36
l2 broke	67
l2 bundles	88
l2 burned	34
l2 buzz	60
l2 by	-60
l2 call	87
l2 calls	25
l2 came	22
l2 cap	21
l2 caps	15
l2 change	-67
l2 changed	29
l2 charge	-16
l2 charged	-55
l2 check	-24
l2 chimney	-31
l2 chlorine's	50
l2 choir's	-24
l2 close	30
l2 closer	37
l2 closes	-37
l2 code	70
l2 color	-18
l2 column	-40
l2 comes	28
l2 coming	-42
l2 compacted	30
l2 compaction's	21
l2 corner	21
l2 count	-21
l2 counter's	33
l2 counts	26
l2 curtain's	-23
l2 curve	18
l2 cut	59
l2 day	-26
l2 days	45
l2 diagonals	59
l2 dip	-32
l2 display	-63
l2 dog	-19
l2 don't	-87
l2 dos	45
l2 dowel	24
l2 down	28
l2 draft's	42
l2 drawing	18
l2 dropped	25
l2 dryer	-23
l2 drywall's	24
l2 eight	27
l2 eighteen	22
l2 em	36
l2 epoxy	-32
l2 exit	15
l2 fan	-29
l2 fault	-20
l2 fifty	-28
l2 finish	21
l2 fit	40
l2 five	35
l2 flights	-23
l2 flue	36
l2 foot	32
l2 footer	-25
l2 for	-65
l2 forty	-33
l2 forward	-49
l2 four	53
l2 fourth	-55
l2 friday	-30
l2 from	-45
l2 ft	33
l2 full	-64
l2 g	-16
l2 gallons	-19
l2 gap's	-18
l2 gas	-32
l2 gate	-24
l2 gave	69
l2 get	-37
l2 give	-28
l2 gives	-47
l2 glass	19
l2 goin	-19
l2 going	-47
l2 gone	20
l2 good	24
l2 gotta	55
l2 grab	-29
l2 guy	50
l2 half	-37
l2 happy	-50
l2 hardware	-61
l2 hatch	-18
l2 haul	-66
l2 have	25
l2 he	-48
l2 head	50
l2 header	29
l2 header's	30
l2 heads	-25
l2 held	23
l2 here	-29
l2 hes	-25
l2 high	59
l2 hinges	-30
l2 his	-18
l2 hole's	18
l2 hook's	16
l2 hot	-17
l2 hour	-25
l2 hours	-27
l2 house	-22
l2 humidity	32
l2 hundred	26
l2 i	86
l2 i'd	36
l2 i'll	18
l2 in	-60
l2 inch	41
l2 inches	15
l2 innings	-17
l2 inside	33
l2 instead	50
l2 ipad's	-38
l2 it	15
l2 it'll	29
l2 it's	-29
l2 joists	24
l2 keys	-59
l2 kid	-47
l2 kit	20
l2 kitchen	-30
l2 knees	-27
l2 knots	34
l2 lands	-47
l2 lap	72
l2 left	48
l2 leg	58
l2 lengths	21
l2 level	-25
l2 lime	18
l2 load's	-24
l2 locked	-29
l2 long	17
l2 loose	30
l2 low	68
l2 lp2	-20
l2 lunch	-16
l2 lvl	27
l2 m	16
l2 make	84
l2 materials	-27
l2 maybe	-32
l2 medium	18
l2 meter	48
l2 mil	-42
l2 mile	-21
l2 missing	44
l2 mix	39
l2 mixed	20
l2 mm	33
l2 moisture's	31
l2 mon	19
l2 monday	28
l2 more	25
l2 morning	26
l2 nail	32
l2 necesito	25
l2 need	20
l2 needs	26
l2 new	29
l2 nineteen	-34
l2 no	-72
l2 not	-63
l2 number	-23
l2 of	-58
l2 of cars	-26
l2 of clock	-40
l2 of food	-41
l2 of kin	-33
l2 of money	-63
l2 of past	-16
l2 of phones	34
l2 of roads	39
l2 of school	-81
l2 of sport	-25
l2 off	-74
l2 office	-15
l2 offset	18
l2 oh	-19
l2 ok	-30
l2 old	-20
l2 on	-63
l2 one	-29
l2 ones	31
l2 only	52
l2 opening	19
l2 order	-18
l2 ot	-19
l2 out	-55
l2 outlets	26
l2 owe	-26
l2 owes	-16
l2 pack	-21
l2 packs	72
l2 pad	32
l2 paint	-17
l2 parks	-22
l2 part	-16
l2 passed	-20
l2 pcs	-69
l2 per	-20
l2 permit	-24
l2 ph	23
l2 phone's	-30
l2 pick	82
l2 pickets	87
l2 pin	-28
l2 pipe	40
l2 pipe's	18
l2 plate	-20
l2 posts	15
l2 powerball	-18
l2 pressure's	24
l2 prob	31
l2 prv's	38
l2 pumped	18
l2 purlins	26
l2 put	66
l2 puts	30
l2 qty	61
l2 quarter	-32
l2 quiet	-18
l2 r	-57
l2 race	-35
l2 rafters	22
l2 rail	30
l2 raise	57
l2 ran	-48
l2 range	30
l2 rated	-24
l2 rather	-18
l2 rcbo's	16
l2 real	27
l2 rebar's	-47
l2 red	-59
l2 return	52
l2 return's	31
l2 ring	-26
l2 room	-31
l2 rough	19
l2 round	-63
l2 rtu	-53
l2 sand	-22
l2 says	25
l2 screws	31
l2 see	-25
l2 sent	28
l2 set	87
l2 sets	-77
l2 seven	-21
l2 seventy	23
l2 she'll	-56
l2 she's	-24
l2 shedding's	-27
l2 shelf	36
l2 shift's	-27
l2 shim	20
l2 shop	-17
l2 short	44
l2 shorted	71
l2 shot	63
l2 should	60
l2 should've	34
l2 sill	37
l2 sill's	39
l2 site	-20
l2 six	-40
l2 sixteenth	-49
l2 sixty	26
l2 slump	41
l2 smokes	-28
l2 smoking	-34
l2 snake	-32
l2 so	34
l2 soft	18
l2 sometime	-33
l2 somewhere	80
l2 spaced	60
l2 spec	46
l2 sphere	48
l2 splash	19
l2 spring's	-30
l2 stairs	-31
l2 stairwell	21
l2 starting	-41
l2 static	15
l2 static's	17
l2 sticks	45
l2 still	-36
l2 stirrups	76
l2 stock's	-28
l2 string	28
l2 stuck	23
l2 studs	37
l2 sub	-23
l2 subfloor's	20
l2 summer	-25
l2 supply's	24
l2 switch	17
l2 table	-56
l2 take	-41
l2 tape	16
l2 tempered	16
l2 ten	-71
l2 terms	-44
l2 tested	49
l2 that	52
l2 that's	-36
l2 the	-92
l2 them	26
l2 thermostat's	49
l2 they're	-49
l2 thin	21
l2 third	-42
l2 three	59
l2 through	-17
l2 throwing	-16
l2 throws	-40
l2 thursday	-22
l2 tide's	-47
l2 ties	23
l2 time	-17
l2 to	-42
l2 tomorrow	-80
l2 top	-15
l2 trap	29
l2 truck	19
l2 turn	15
l2 twelve	37
l2 two	-53
l2 type	-64
l2 u	-36
l2 unit	-23
l2 up	-25
l2 us	-36
l2 used	-15
l2 vanity	56
l2 wall	38
l2 wants	-24
l2 was	-74
l2 washer	27
l2 water's	33
l2 ways	-25
l2 we	60
l2 we're	-20
l2 wee	-35
l2 went	16
l2 what's	-49
l2 width	26
l2 will	25
l2 window	-58
l2 wound	18
l2 years	-41
l2 you	17
l2 zero	-60
l2. #	-16
l2. '	50
l2. (	40
l2. ,	24
l2. -ed	48
l2. -ing	-15
l2. -s	49
l2. /	18
l2. 1	-16
l2. Name	-23
l2. letter	36
l2. n't	-86
l2. one	-59
l2. unit	35
l3 
	-19
l3 '	-15
l3 (	18
l3 ,	22
l3 -	-20
l3 /	15
l3 1	-38
l3 1.5	33
l3 10	-72
l3 12	39
l3 16	-27
l3 1750	41
l3 2	18
l3 2214	-22
l3 3	19
l3 5	-15
l3 6	-17
l3 6120	-26
l3 7	-44
l3 8	16
l3 :	-17
l3 about	-23
l3 all	-38
l3 already	17
l3 also	-27
l3 am	-21
l3 amp	16
l3 amps	50
l3 an	51
l3 apart	49
l3 apiece	37
l3 are	20
l3 as	20
l3 at	-100
l3 b	-31
l3 back	-30
l3 bath	78
l3 bath's	15
l3 batten	25
l3 bay	48
l3 be	-46
l3 better	18
l3 between	-59
l3 big	21
l3 birdied	-21
l3 blow	26
l3 board's	-16
l3 bolt	-38
l3 bronze	16
l3 building	23
l3 bump	17
l3 busted	-29
l3 but	-30
l3 buy	-20
l3 by	53
l3 call	-24
l3 came	71
l3 can't	24
l3 change	54
l3 changed	19
l3 channel	-46
l3 ckts	-26
l3 claim's	-25
l3 cleaned	35
l3 cleanouts	15
l3 clear	38
l3 code	-23
l3 corta	45
l3 covers	15
l3 cracked	27
l3 crane's	-27
l3 cut	45
l3 deep	-19
l3 den	26
l3 digits	-41
l3 dimmers	68
l3 door	-23
l3 dryer	21
l3 dump	17
l3 dumpsters	33
l3 each	60
l3 eight	31
l3 eighty	-42
l3 ended	39
l3 expires	-51
l3 f	25
l3 falls	-20
l3 fan	18
l3 feeding	21
l3 fifty	-18
l3 fire	-22
l3 first	70
l3 flashes	-46
l3 flat	-34
l3 flew	-16
l3 foot	31
l3 footing's	16
l3 form	28
l3 four	-43
l3 fourteen	39
l3 fridge	16
l3 from	-26
l3 gallons	-37
l3 gate	-41
l3 generator	30
l3 get	-64
l3 gets	29
l3 goal	-34
l3 going	-38
l3 gone	20
l3 grab	28
l3 gray	-25
l3 grout's	56
l3 hank	-24
l3 he	-56
l3 he's	-35
l3 heads	22
l3 her	-24
l3 hes	-32
l3 him	-42
l3 hinges	-40
l3 his	-19
l3 hit	-16
l3 hole	26
l3 hour	-26
l3 hour's	-19
l3 hours	-16
l3 hung	20
l3 i'd	27
l3 i'm	36
l3 if	55
l3 im	-39
l3 in	-23
l3 inch	37
l3 inlet's	30
l3 is	-42
l3 island	20
l3 it's	-20
l3 its	-26
l3 jack's	18
l3 jumper	-65
l3 keep	66
l3 kicks	57
l3 kids	33
l3 knock	-20
l3 kpa	40
l3 last	-30
l3 left	-28
l3 leg	56
l3 let	-37
l3 lifted	34
l3 light	-34
l3 load	-25
l3 loads	-18
l3 long	25
l3 look	-18
l3 loose	17
l3 lumber's	-38
l3 marked	-52
l3 me	25
l3 mirror's	15
l3 missing	20
l3 mix	63
l3 more	36
l3 move	30
l3 moved	-53
l3 my	-67
l3 nailed	15
l3 new	16
l3 next	-62
l3 nine	59
l3 nobody	-47
l3 nothing	31
l3 number	58
l3 of	19
l3 office	-16
l3 oh	24
l3 ohms	27
l3 ok	-16
l3 old	78
l3 on	22
l3 ones	-18
l3 only	-17
l3 ordered	17
l3 other	53
l3 ought	32
l3 out	-24
l3 outlets	-25
l3 owner	-18
l3 plans	66
l3 plinth	25
l3 plus	17
l3 press	-21
l3 pumped	56
l3 put	-53
l3 quit	-34
l3 r	31
l3 rack	-42
l3 rafters	30
l3 ratio's	50
l3 register's	33
l3 relief	47
l3 rental	-30
l3 rev	36
l3 rip	32
l3 rise	37
l3 room	27
l3 row	-16
l3 run	21
l3 s	28
l3 safe	-31
l3 says	-25
l3 see	-24
l3 service	17
l3 seven	28
l3 seventy	24
l3 she	-44
l3 shelves	18
l3 should	28
l3 sign's	29
l3 since	-52
l3 six	-25
l3 slide	43
l3 smoko	-28
l3 sold	-17
l3 some	33
l3 somebody	41
l3 someone	-16
l3 stairs	25
l3 start	-36
l3 started	-55
l3 stat's	-25
l3 static	21
l3 steel	18
l3 steps	-33
l3 still	-34
l3 stub	30
l3 subcool	23
l3 superheat's	32
l3 supposed	20
l3 switch	-24
l3 tap	23
l3 tape	-18
l3 team's	-37
l3 temp	49
l3 ten	-27
l3 test	-50
l3 th	-17
l3 that's	-20
l3 the	31
l3 them	21
l3 there	49
l3 they	-27
l3 thick	48
l3 thinks	-23
l3 thirteen	47
l3 thirty	-27
l3 three	-49
l3 thurs	-19
l3 thursday	19
l3 ticket	-20
l3 tie	38
l3 tile	29
l3 times	-35
l3 tires	-32
l3 to	32
l3 tomorrow	26
l3 too	29
l3 top	-16
l3 torque	54
l3 touch	24
l3 trim	25
l3 tripped	-23
l3 truck	18
l3 truck's	-24
l3 tune	-83
l3 twelve	35
l3 two	-16
l3 txt	-18
l3 u	-43
l3 unit	26
l3 up	-39
l3 upsize	36
l3 upstairs	21
l3 used	17
l3 valve	20
l3 van	21
l3 vent	22
l3 vikings	-20
l3 voices	-16
l3 voted	-20
l3 wall	-16
l3 ways	18
l3 we	-29
l3 well	29
l3 wet	17
l3 white	38
l3 wide	17
l3 wire's	21
l3 wood	-32
l3 x	33
l3 yard	-26
l3 you	-58
l3 zz	-29
l3. '	-15
l3. (	18
l3. ,	22
l3. -	-20
l3. -ed	-37
l3. -ing	35
l3. :	-17
l3. n't	36
letter head 0	-54
letter head none	-21
long 10	-27
long 30	40
long 6	22
long undefined	-19
more figures 5	-22
more l. word	-46
more r 	-31
more r. #	-31
more r. word	-23
more words round	-38
names 0	-18
names 0 strange 0	33
names 0 strange 1	-71
names 0 strange 2	-112
names 1 strange 1	-46
names 1 strange 2	-21
names 2 strange 1	42
names 2 strange 2	43
names 3	21
of cars	34
of food	-28
of kin	-77
of media	-86
of money	-63
of past	-23
of phones	-62
of roads	-31
of school	-41
of services	16
of so many 0	41
of so many 1	-41
of so many 2	-38
of so many 3	-31
one head 0	17
one head none	-118
r of body	-42
r of cars	33
r of clock	-32
r of food	-60
r of kin	-85
r of money	-161
r of services	52
r of sport	-19
r1 )	-65
r1 ,	44
r1 -	-80
r1 .	27
r1 12	24
r1 2	47
r1 3	-22
r1 4	20
r1 50	-29
r1 555	-17
r1 7	-27
r1 :	-114
r1 @	18
r1 a	-26
r1 aa	19
r1 above	41
r1 across	32
r1 adds	-27
r1 advil	-20
r1 again	-45
r1 against	35
r1 air	-15
r1 alarm	-27
r1 along	15
r1 already	-53
r1 an	-61
r1 anchors	19
r1 and	-20
r1 apart	74
r1 apiece	31
r1 arborvitae	16
r1 area	-29
r1 as	-29
r1 at	42
r1 b	-40
r1 baby	17
r1 back	41
r1 bad	28
r1 banksia	-20
r1 bars	-18
r1 base	24
r1 baths	22
r1 batts	-65
r1 bays	-27
r1 be	21
r1 bedroom	-23
r1 billed	-15
r1 blade	-40
r1 blades	30
r1 blank	16
r1 blinds	44
r1 blocks	16
r1 blown	19
r1 board	37
r1 boards	59
r1 bracket	23
r1 brass	41
r1 brg	17
r1 bricks	-16
r1 broke	-16
r1 bucks	-135
r1 burner	-51
r1 but	32
r1 by	49
r1 c	-25
r1 calls	-15
r1 can	-30
r1 cells	31
r1 cement	-18
r1 centers	23
r1 centres	23
r1 chance	-15
r1 clear	33
r1 closed	46
r1 closets	18
r1 coffee	-22
r1 come	-17
r1 coming	30
r1 common	35
r1 connections	-16
r1 corner	48
r1 corridor	-20
r1 cr	25
r1 cracked	27
r1 creams	-15
r1 crew	-32
r1 crows	-35
r1 cut	17
r1 d	-15
r1 dash	-21
r1 dead	26
r1 decks	20
r1 deep	69
r1 den	33
r1 dentists	-43
r1 dimmers	26
r1 dollar	-57
r1 dollars	-20
r1 don't	37
r1 done	58
r1 dont	-17
r1 door	-22
r1 doors	20
r1 double	20
r1 down	19
r1 drip	15
r1 dutchmen	24
r1 dynamic	22
r1 each	79
r1 elbows	17
r1 emer	15
r1 euro	-87
r1 even	29
r1 every	-25
r1 exit	26
r1 extra	60
r1 extras	52
r1 faced	-17
r1 fall	38
r1 fifty	-38
r1 fingers	-25
r1 five	-62
r1 flat	22
r1 floor	25
r1 flowing	32
r1 forty	-17
r1 four	-46
r1 fourteen	-20
r1 from	-15
r1 gang	-71
r1 gets	-35
r1 give	42
r1 go	-57
r1 goes	-31
r1 going	-20
r1 gone	-35
r1 good	21
r1 got	-27
r1 grille	-39
r1 guys	-54
r1 had	-20
r1 hall	37
r1 hand	-33
r1 handle	-59
r1 has	-71
r1 have	35
r1 he'll	-36
r1 head	22
r1 head's	16
r1 heads	68
r1 helpers	-33
r1 here	89
r1 high	95
r1 hinges	31
r1 hit	-20
r1 hits	17
r1 hole	-82
r1 hooks	30
r1 hot	-21
r1 house	-23
r1 hundreds	-24
r1 i	63
r1 i'll	25
r1 i'm	20
r1 i've	-18
r1 in	22
r1 instead	29
r1 iron	-28
r1 is	-115
r1 ish	-19
r1 it	-25
r1 it'll	-36
r1 it's	-18
r1 juniper	-25
r1 just	73
r1 keys	-17
r1 kinds	-37
r1 ladders	16
r1 larch	-21
r1 last	-21
r1 laundromats	-22
r1 layer	-71
r1 layers	19
r1 left	68
r1 leg	-18
r1 lift	-22
r1 like	23
r1 limiter	40
r1 living	17
r1 location	48
r1 long	74
r1 loose	26
r1 love	-31
r1 lower	16
r1 man	-24
r1 maple	-43
r1 max	52
r1 modules	22
r1 more	119
r1 nail	27
r1 need	43
r1 needs	-76
r1 net	-44
r1 new	55
r1 next	-25
r1 niches	22
r1 nine	17
r1 ninety	-55
r1 ninth	-24
r1 no	28
r1 north	-16
r1 nos	22
r1 nothing	-33
r1 now	-25
r1 o'clock	-95
r1 obscure	16
r1 oc	46
r1 oclock	-29
r1 off	52
r1 outlets	28
r1 over	-29
r1 packers	-21
r1 panel	-120
r1 panhead	-29
r1 part	-58
r1 parts	54
r1 pavers	16
r1 per	67
r1 piers	23
r1 plate	34
r1 plinth	19
r1 pm	-29
r1 podium	-17
r1 problems	-21
r1 proud	21
r1 pulled	33
r1 put	-28
r1 quarter	-27
r1 quid	-31
r1 rafters	16
r1 rattle	22
r1 reads	-35
r1 ready	-18
r1 receps	18
r1 refused	-27
r1 return's	27
r1 right	-21
r1 rod	-19
r1 roof	-25
r1 rubber	23
r1 running	26
r1 runs	42
r1 says	-58
r1 screens	44
r1 screws	16
r1 second	-66
r1 seeds	-32
r1 seven	-18
r1 sharp	-39
r1 she	-17
r1 shelf	-42
r1 shift	-39
r1 shims	24
r1 shingles	-25
r1 short	31
r1 shot	-17
r1 should	86
r1 shows	-26
r1 side	-41
r1 sides	-29
r1 silicone	-28
r1 since	-32
r1 sink	51
r1 six	-45
r1 slope	18
r1 smoke	20
r1 smokes	-21
r1 so	35
r1 soft	-23
r1 something	-40
r1 space	17
r1 spaces	32
r1 spare	56
r1 speeds	-16
r1 split	-19
r1 spots	-22
r1 sprinkler	37
r1 square	-22
r1 stage	-34
r1 stakes	17
r1 stars	-46
r1 steps	-36
r1 still	60
r1 stone	-15
r1 stops	-19
r1 straps	21
r1 strikes	-51
r1 studs	46
r1 sugars	-18
r1 supply	15
r1 sure	-22
r1 switch	27
r1 tall	20
r1 ten	39
r1 the	-38
r1 then	-34
r1 they	22
r1 thick	46
r1 thing	-17
r1 things	-26
r1 thirty	22
r1 this	-30
r1 three	22
r1 through	-17
r1 til	-16
r1 till	-24
r1 times	-115
r1 tip	-20
r1 to	50
r1 together	-39
r1 toilet	36
r1 toilets	34
r1 tomorrow	-30
r1 tonight	24
r1 total	26
r1 toward	30
r1 towel	20
r1 treads	21
r1 tries	52
r1 tripped	-37
r1 tub	-20
r1 two	-26
r1 u	-16
r1 up	26
r1 usb	22
r1 valve	-23
r1 voicemails	-15
r1 voices	-24
r1 wafers	23
r1 walls	29
r1 wants	-26
r1 was	-63
r1 waste	16
r1 wax	17
r1 way	-74
r1 ways	-48
r1 we're	-34
r1 wednesday	27
r1 were	25
r1 where	36
r1 white	21
r1 wide	60
r1 will	48
r1 window	-44
r1 windows	60
r1 wire	-72
r1 wood	-27
r1 work	48
r1 wrongs	-36
r1 x	55
r1. 's	25
r1. )	-65
r1. ,	44
r1. -	-80
r1. -ing	34
r1. .	27
r1. :	-114
r1. @	18
r1. Name	-51
r1. letter	52
r1. one	-144
r1. unit	22
r1. word	27
r2 "	22
r2 #	-23
r2 (	-25
r2 *	-24
r2 -	19
r2 .	22
r2 10	15
r2 100	36
r2 12	67
r2 15	17
r2 17	-21
r2 18	-20
r2 2	-37
r2 21	-26
r2 24	-16
r2 250	46
r2 28	24
r2 34	-16
r2 36	21
r2 40	17
r2 41	18
r2 430	-37
r2 450	20
r2 5	-24
r2 6	21
r2 7	-38
r2 74	-24
r2 8	31
r2 :	-85
r2 about	-34
r2 acts	-29
r2 against	-15
r2 all	-15
r2 also	-37
r2 an	-23
r2 and	22
r2 are	55
r2 arms	-18
r2 around	-18
r2 ask	37
r2 at	-36
r2 b	-26
r2 back	-25
r2 ballasts	19
r2 bath	-19
r2 be	64
r2 bedroom	-26
r2 before	-16
r2 behind	21
r2 bent	30
r2 better	23
r2 board	37
r2 bought	31
r2 box	-85
r2 boxes	25
r2 brackets	-17
r2 bust	-23
r2 but	30
r2 buy	24
r2 buzz	24
r2 by	16
r2 c	-32
r2 cant	-23
r2 carry	-16
r2 caulk	34
r2 center	54
r2 change	-56
r2 changed	16
r2 circus	-24
r2 clear	43
r2 client	-27
r2 close	35
r2 coat	20
r2 code	60
r2 concrete	-22
r2 cr	-19
r2 crack	-24
r2 cracked	105
r2 crown	-38
r2 day	-40
r2 days	-22
r2 deny	-20
r2 dirt	16
r2 do	77
r2 don't	-20
r2 done	-18
r2 door	-15
r2 down	-115
r2 drawing	17
r2 each	86
r2 easter	-29
r2 eight	-26
r2 eighteen	-42
r2 eighty	-38
r2 em	74
r2 epoxy	-35
r2 every	43
r2 everybody	-19
r2 everywhere	-32
r2 extra	-15
r2 faces	-27
r2 fan	-38
r2 far	51
r2 feet	-55
r2 fill	25
r2 filter	23
r2 fine	33
r2 five	-53
r2 floor	-30
r2 fogged	17
r2 foot	20
r2 footers	31
r2 for	51
r2 forward	-36
r2 four	-54
r2 fourteen	69
r2 framed	-33
r2 fridays	-23
r2 from	-29
r2 front	63
r2 furnace	-40
r2 gal	-21
r2 gang	-18
r2 get	-21
r2 glue	-32
r2 go	62
r2 got	31
r2 grade	20
r2 ground	-21
r2 hair	33
r2 hang	56
r2 hauf	-19
r2 have	24
r2 he	-44
r2 he's	-30
r2 head	35
r2 heads	29
r2 hinges	-46
r2 his	20
r2 hole	-24
r2 hot	57
r2 hour	-30
r2 house	24
r2 hr	-36
r2 hung	25
r2 i'm	-23
r2 if	-20
r2 inch	48
r2 inside	19
r2 it	21
r2 kitchen	17
r2 later	21
r2 laundry	-23
r2 lift	-20
r2 litre	27
r2 lol	-26
r2 look	-16
r2 lost	16
r2 louvres	18
r2 low	16
r2 medium	-52
r2 midspan	16
r2 mirror	-16
r2 missing	31
r2 monday	-18
r2 morning	-23
r2 must	-17
r2 never	-21
r2 night	-53
r2 nine	-19
r2 nineteen	-41
r2 ninety	19
r2 nobody's	-24
r2 noon	-41
r2 not	20
r2 nuts	-45
r2 of	-31
r2 oh	-27
r2 ok	22
r2 one	-21
r2 ones	35
r2 open	34
r2 opens	-24
r2 or	23
r2 order	-20
r2 ounce	27
r2 over	36
r2 owner	-15
r2 pad	-18
r2 panel	21
r2 past	-28
r2 patch	20
r2 pattern	-33
r2 plaster	18
r2 play	-32
r2 plus	16
r2 point	-36
r2 pop	-21
r2 pops	20
r2 pound	20
r2 primer	37
r2 put	15
r2 quarter	48
r2 rail	-24
r2 range	-50
r2 reads	16
r2 rest	40
r2 ring	37
r2 road	27
r2 rolls	26
r2 row	28
r2 rub	44
r2 run	-18
r2 saturday	-35
r2 set	-30
r2 she	28
r2 she's	17
r2 sheet	-17
r2 shelf	20
r2 shimmed	34
r2 short	36
r2 should	-20
r2 shower	-33
r2 shut	-18
r2 shy	-15
r2 side	34
r2 siding	33
r2 sign	21
r2 signed	-45
r2 single	33
r2 site	50
r2 six	-46
r2 skip	-20
r2 skip's	-16
r2 slow	-16
r2 somewhere	-16
r2 spraying	22
r2 spring	-18
r2 st	-22
r2 start	-26
r2 started	-34
r2 starting	-21
r2 sticks	-20
r2 still	-56
r2 stool	-35
r2 stop	24
r2 sunday	-34
r2 supposed	15
r2 swap	30
r2 tape	16
r2 ten	44
r2 the	55
r2 there's	-23
r2 these	48
r2 they	-18
r2 they've	16
r2 thing	-62
r2 thirty	22
r2 this	44
r2 those	-24
r2 thousand	-25
r2 three	-54
r2 thursday	-25
r2 tighter	32
r2 time	-34
r2 times	19
r2 today	32
r2 told	19
r2 treinta	37
r2 trips	-19
r2 tuesday	-18
r2 twelve	23
r2 twenty	27
r2 two	-27
r2 us	-70
r2 used	23
r2 want	39
r2 wants	-23
r2 way	53
r2 ways	28
r2 week	28
r2 weekend	29
r2 were	26
r2 what	51
r2 wires	16
r2 with	-17
r2 won't	19
r2 works	-39
r2 worth	18
r2 x	37
r2 you're	33
r2. "	22
r2. (	-25
r2. *	-24
r2. -	19
r2. -ed	21
r2. -ing	34
r2. -s	-17
r2. .	22
r2. :	-85
r2. Name	-71
r2. letter	15
r2. n't	-21
r2. one	-66
r2. unit	49
r2. word	15
r3 %	35
r3 '	-34
r3 10	-16
r3 14	-33
r3 28	-31
r3 3	27
r3 5	40
r3 6	-33
r3 7	44
r3 8	39
r3 90	17
r3 :	-59
r3 ;	-33
r3 a	-58
r3 act	-30
r3 after	-37
r3 again	-28
r3 air	27
r3 an	-26
r3 anodes	31
r3 are	27
r3 ask	-15
r3 at	22
r3 bag	-22
r3 bags	21
r3 bar	17
r3 bath	36
r3 bay	23
r3 bears	-22
r3 behind	29
r3 black	52
r3 blinds	-18
r3 blue	-26
r3 board	-55
r3 boards	44
r3 books	-32
r3 bottom	93
r3 box	41
r3 boxes	-22
r3 braille	29
r3 break	-35
r3 broken	33
r3 bronze	23
r3 brought	34
r3 bucket	19
r3 but	15
r3 buzzer	-21
r3 cabinet	-16
r3 can	50
r3 cant	-31
r3 carton	31
r3 case	19
r3 cash	-25
r3 cb	-24
r3 centre	18
r3 change	-18
r3 changed	-27
r3 chimney	21
r3 chipped	52
r3 clips	22
r3 clock	-25
r3 close	-37
r3 closet	46
r3 color	-50
r3 corner	30
r3 count	56
r3 counter	-15
r3 cover	29
r3 cracked	-34
r3 crew	-66
r3 crown	-28
r3 damaged	24
r3 dash	30
r3 de	25
r3 dead	28
r3 degree	22
r3 discharge	-26
r3 do	-15
r3 dock	-16
r3 done	-31
r3 door	44
r3 dot	-47
r3 down	19
r3 drawer	-20
r3 driving	-32
r3 dryer	26
r3 dump	53
r3 dumpster	-22
r3 each	-59
r3 edge	43
r3 eggshell	18
r3 either	-21
r3 eleven	-31
r3 ends	52
r3 enough	27
r3 every	-23
r3 falls	-25
r3 far	22
r3 fault	-22
r3 feet	19
r3 field	49
r3 fifteen	21
r3 finish	21
r3 fit	34
r3 fixed	-25
r3 flapper	-35
r3 flashing	50
r3 flat	21
r3 flow's	17
r3 foot	17
r3 for	-49
r3 form	16
r3 forty	-22
r3 front	17
r3 furnace	-23
r3 gang	42
r3 garage	-26
r3 gauge	25
r3 glass	18
r3 go	19
r3 good	-32
r3 got	52
r3 grab	-23
r3 grate	-20
r3 grille	-60
r3 grout	31
r3 guys	-37
r3 hangers	26
r3 has	21
r3 haul	-47
r3 he	-30
r3 he's	-67
r3 head	-37
r3 heater	38
r3 held	56
r3 her	32
r3 high	29
r3 hinge	19
r3 hinges	-36
r3 hour	25
r3 hours	-25
r3 how	-43
r3 i	-34
r3 i'll	-18
r3 idlers	56
r3 if	-26
r3 in	-23
r3 inch	-35
r3 is	-21
r3 it	47
r3 it's	19
r3 just	-19
r3 kept	-20
r3 kitchen	31
r3 knocked	-24
r3 landing	40
r3 laser	47
r3 late	-26
r3 latest	-24
r3 leave	31
r3 leg	70
r3 length	46
r3 level	16
r3 lift	-39
r3 like	-61
r3 lock	24
r3 long	32
r3 lost	-16
r3 lot	-30
r3 low	16
r3 manifold	17
r3 manual	-30
r3 mate	-21
r3 middle	54
r3 min	-19
r3 minute	-35
r3 minutes	-32
r3 missing	-39
r3 molding	-38
r3 monday	-38
r3 month	30
r3 mosaic	20
r3 moved	-18
r3 nail	-33
r3 need	23
r3 neutral	21
r3 never	-19
r3 new	-52
r3 nine	15
r3 nineteen	25
r3 nose	46
r3 number	18
r3 off	-32
r3 oh	38
r3 old	-27
r3 on	-18
r3 open	-16
r3 opener	-21
r3 order	24
r3 other	26
r3 ought	28
r3 out	52
r3 outlet	19
r3 packers	-29
r3 painted	37
r3 panel	18
r3 parts	18
r3 plan	47
r3 platform	-18
r3 plenty	23
r3 plumbers	-23
r3 podium	-52
r3 point	34
r3 pool	-52
r3 porch	34
r3 pulled	-19
r3 put	18
r3 quarter	18
r3 radio	-54
r3 raining	-40
r3 ran	45
r3 range	-20
r3 reducers	25
r3 required	-24
r3 reset	-43
r3 right	-35
r3 row	-26
r3 run	41
r3 runs	-19
r3 safe	39
r3 safety	-44
r3 saints	-42
r3 sand	20
r3 service	-18
r3 serving	-18
r3 set	24
r3 seven	-30
r3 seventy	23
r3 sheet	26
r3 shelf	22
r3 short	39
r3 shot	-27
r3 signal	-20
r3 sill	24
r3 sills	17
r3 six	27
r3 sixteen	29
r3 sixty	22
r3 slope	18
r3 so	-22
r3 soft	19
r3 some	21
r3 spring	-18
r3 sprinkler	-15
r3 stay	-24
r3 steep	46
r3 steps	25
r3 still	-38
r3 straps	-18
r3 street	-15
r3 stripped	26
r3 take	39
r3 tape	53
r3 ten	-53
r3 than	-18
r3 then	19
r3 thermostat	-44
r3 they	-18
r3 this	-19
r3 three	22
r3 through	-40
r3 tied	49
r3 tile's	33
r3 timesheet	-24
r3 today	-18
r3 together	-33
r3 tomorrow	19
r3 tread	-44
r3 truck	-22
r3 tub	22
r3 tubes	34
r3 tubs	27
r3 twelve	-27
r3 twenty	33
r3 two	-52
r3 type	65
r3 uncles	-15
r3 under	-18
r3 underside	21
r3 up	-38
r3 use	27
r3 van	19
r3 vent	-17
r3 waste	26
r3 way	45
r3 we	45
r3 we're	21
r3 week	-23
r3 were	18
r3 what	-22
r3 white	-21
r3 wind	-21
r3 wire's	26
r3 with	-18
r3 x	30
r3 y	37
r3 year	-23
r3. %	35
r3. '	-34
r3. -ed	25
r3. -ing	-29
r3. -ly	-30
r3. 1	20
r3. :	-59
r3. ;	-33
r3. Name	-18
r3. n't	-28
r3. one	19
r3. unit	36
rule 	-52
rule eachOf	77
rule pair	173
rule quantity/decimal	35
rule quantity/mixed	54
rule quantity/whole+taken-back	30
rule range	18
size 1	-39
size 20	19
size 60	23
size 9999	-40
size more	-59
strange 0	21
strange 1	-37
strange 2	-22
strange 3	-47
strange 4	-24
talk -1	-32
talk -2.5	-90
talk -5	-104
talk -9	-101
talk 0	-40
talk 1	-40
talk 14	56
talk 20	41
talk 9	75
talk each -1	-73
talk each -2.5	-129
talk each -5	-76
talk each 0	-41
talk each 1	-56
talk each 14	41
talk each 20	80
talk each 9	35
talk each less	-44
unit head 0	-51
unit head 1	-16
unit head none	-28
unit percent	-16
units 0	-48
units 1	64
units 2	33
word head 3	50
£ head none	-43
`;
