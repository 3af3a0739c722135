/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
" head none	39
# head 0	17
# head 1	42
$ head none	-91
's head 0	-43
's head none	119
( head none	22
+ head none	32
, head 0	21
, head 1	16
, head none	37
- head 0	-21
- head 1	23
- head none	-65
-ed head none	59
-ing head 0	23
-ly head none	63
-s head 0	59
-s head none	43
/ head none	-93
0 l 	-16
0 l. #	-16
0 r 	-20
0 r to	-20
0 r. #	-20
0 r. -s	19
0 r. word	-17
1 figures 1	50
1 head 0	16
1 head none	-73
1 l +	20
1 l ,	70
1 l .	30
1 l and	84
1 l another	-87
1 l at	34
1 l bars	25
1 l bath	-33
1 l be	22
1 l big	-58
1 l bottom	-38
1 l bought	57
1 l bring	39
1 l broke	28
1 l buy	56
1 l by	50
1 l crowned	28
1 l cut	-44
1 l each	-40
1 l every	-101
1 l falls	-21
1 l for	-20
1 l found	27
1 l get	87
1 l good	-20
1 l got	77
1 l grab	31
1 l had	37
1 l hall	51
1 l have	20
1 l her	38
1 l hinges	15
1 l hit	-26
1 l in	21
1 l inch	60
1 l is	-37
1 l just	84
1 l last	-66
1 l left	-32
1 l leg	-27
1 l long	-62
1 l longer	-19
1 l lost	48
1 l me	40
1 l mm	-36
1 l nd	-18
1 l need	49
1 l new	-91
1 l no	-24
1 l not	-27
1 l old	-71
1 l on	-17
1 l one	-29
1 l order	23
1 l other	-103
1 l plus	48
1 l put	81
1 l reading	25
1 l red	37
1 l right	-29
1 l says	16
1 l second	-29
1 l shave	38
1 l side	29
1 l square	-29
1 l static	16
1 l static's	25
1 l take	-21
1 l th	-18
1 l that	-90
1 l that's	-17
1 l the	-134
1 l there's	37
1 l this	-27
1 l type	-30
1 l up	24
1 l want	56
1 l was	32
1 l. 's	19
1 l. +	20
1 l. ,	70
1 l. -ed	-17
1 l. -ing	-27
1 l. -s	-19
1 l. .	30
1 l. letter	-19
1 l. one	-38
1 l. word	-39
1 parts	18
1 r 	25
1 r 
	20
1 r -	-17
1 r .	-48
1 r 1	17
1 r 3	18
1 r at	-72
1 r bracket	27
1 r cracked	24
1 r door	19
1 r down	-17
1 r end	-45
1 r exit	21
1 r for	45
1 r hand	-31
1 r has	-24
1 r head	23
1 r here	59
1 r hit	-24
1 r i	-15
1 r is	26
1 r it's	-22
1 r leg	-35
1 r location	46
1 r max	17
1 r missing	15
1 r new	50
1 r obscure	16
1 r of	-238
1 r off	41
1 r out	-22
1 r panel	-50
1 r plinth	18
1 r reads	-29
1 r ring	43
1 r rod	-18
1 r shelf	-59
1 r short	-30
1 r side	-23
1 r sink	52
1 r so	-25
1 r spare	45
1 r sprinkler	34
1 r to	-68
1 r towel	18
1 r was	-25
1 r wednesday	26
1 r. #	25
1 r. 's	-27
1 r. -	-17
1 r. -ed	-19
1 r. -ing	26
1 r. -s	-60
1 r. .	-48
1 r. /	20
1 r. 1	75
1 r. one	43
1 r. word	-45
1 words	-66
12 figures 1	-29
12 l 	48
12 l 
	-29
12 l "	23
12 l :	37
12 l a	20
12 l about	24
12 l all	50
12 l and	19
12 l another	33
12 l apartment	-22
12 l are	18
12 l around	-29
12 l at	-123
12 l b	-24
12 l back	-33
12 l backfill	57
12 l bay	-22
12 l been	35
12 l before	-31
12 l between	-24
12 l bottom's	18
12 l bout	33
12 l breaker	-34
12 l brought	37
12 l building	-26
12 l but	46
12 l by	34
12 l can	29
12 l case	29
12 l cat	-21
12 l channel	-23
12 l circuit	-78
12 l code's	-16
12 l correction	16
12 l count	23
12 l cut	40
12 l door	-27
12 l double	-25
12 l drops	15
12 l e	-19
12 l edge	15
12 l embed	41
12 l end's	-31
12 l every	44
12 l exit	-24
12 l expires	-50
12 l exposure's	57
12 l fault	-22
12 l fell	46
12 l fit	18
12 l fla	16
12 l flat	-20
12 l floor	-49
12 l for	16
12 l four	-27
12 l front	-40
12 l garage	57
12 l get	21
12 l gone	-26
12 l got	82
12 l grab	18
12 l had	-33
12 l has	48
12 l have	17
12 l hit	-15
12 l hole	-66
12 l house	-50
12 l hung	42
12 l hwy	-22
12 l in	21
12 l is	30
12 l it	63
12 l it's	-83
12 l items	-19
12 l its	-17
12 l key	-40
12 l laborer	58
12 l lap	49
12 l last	21
12 l least	62
12 l leaves	47
12 l left	53
12 l like	-26
12 l line	-36
12 l lintel	18
12 l lost	-25
12 l lot	-56
12 l meant	20
12 l need	66
12 l needs	26
12 l nine	-19
12 l not	47
12 l note	-32
12 l number	-87
12 l number's	-29
12 l ocean's	-31
12 l of	32
12 l offered	-25
12 l on	-33
12 l ought	-19
12 l out	22
12 l over	-28
12 l overhang's	23
12 l owns	-22
12 l past	-61
12 l plus	15
12 l port	-21
12 l poured	18
12 l pulling	22
12 l ran	51
12 l reading	-61
12 l reads	16
12 l replaced	25
12 l reveal's	17
12 l right	-27
12 l riser	-46
12 l rm	-23
12 l run	40
12 l said	-46
12 l saves	-20
12 l says	32
12 l sent	15
12 l set	-57
12 l sheet	-24
12 l six	21
12 l so	24
12 l solid	-28
12 l stack	16
12 l starter	26
12 l step	-20
12 l subcool	30
12 l superheat's	17
12 l take	32
12 l takes	29
12 l than	28
12 l the	42
12 l then	-21
12 l there's	30
12 l throat's	53
12 l through	-24
12 l til	-45
12 l to	17
12 l took	21
12 l tread	-19
12 l treads	16
12 l truck	-33
12 l under	-17
12 l unit	-84
12 l up	62
12 l us	47
12 l wants	-31
12 l we're	56
12 l x	47
12 l zone	-32
12 l ×	28
12 l. "	23
12 l. #	48
12 l. 's	31
12 l. -ed	84
12 l. -ing	-27
12 l. -s	36
12 l. /	-29
12 l. :	37
12 l. Name	-36
12 l. one	-46
12 l. unit	-26
12 l. word	-22
12 parts	32
12 r )	-32
12 r ,	23
12 r -	-20
12 r .	34
12 r :	-33
12 r a	25
12 r adds	-23
12 r and	-26
12 r as	-28
12 r b	-38
12 r blown	20
12 r boards	19
12 r brg	18
12 r bucks	-17
12 r by	61
12 r cells	30
12 r closed	53
12 r coming	30
12 r creams	-19
12 r crows	-34
12 r dash	-23
12 r dead	32
12 r deep	43
12 r den	32
12 r dentists	-40
12 r done	38
12 r door	-36
12 r doors	45
12 r down	27
12 r drops	22
12 r eight	-18
12 r end	15
12 r fifty	-21
12 r five	-48
12 r for	40
12 r got	-32
12 r grille	-34
12 r has	-21
12 r heads	27
12 r here	36
12 r high	30
12 r hits	25
12 r hole	-36
12 r homeruns	27
12 r house	-22
12 r i	21
12 r instead	23
12 r iron	-26
12 r is	-35
12 r it	-20
12 r last	-28
12 r laundromats	-22
12 r left	49
12 r legs	-33
12 r like	36
12 r long	20
12 r love	-32
12 r maple	-30
12 r more	44
12 r needs	-55
12 r no	-31
12 r o'clock	-39
12 r of	49
12 r off	19
12 r on	30
12 r out	-82
12 r panel	-37
12 r rattle	21
12 r roof	-26
12 r rooms	15
12 r running	19
12 r seeds	-32
12 r sharp	-29
12 r shift	-43
12 r short	70
12 r should	24
12 r shows	-16
12 r six	-39
12 r so	21
12 r something	-39
12 r stops	-15
12 r studs	21
12 r the	26
12 r this	-22
12 r through	-19
12 r till	-21
12 r times	-16
12 r to	22
12 r tomorrow	15
12 r toward	29
12 r two	-23
12 r valve	-21
12 r wants	-17
12 r was	-26
12 r waste	15
12 r when	-20
12 r wide	21
12 r work	45
12 r x	16
12 r. 's	19
12 r. )	-32
12 r. ,	23
12 r. -	-20
12 r. -ed	33
12 r. -s	17
12 r. .	34
12 r. :	-33
12 r. Name	-29
12 r. one	-97
12 r. unit	43
12 words	18
12 words round	-29
2 l 	35
2 l 
	-26
2 l (	21
2 l ,	18
2 l -	-26
2 l a	-16
2 l about	15
2 l adds	36
2 l another	23
2 l around	-25
2 l at	-77
2 l back	22
2 l bath	-50
2 l bay	-57
2 l beam	36
2 l bed	-25
2 l bedroom	-65
2 l bought	18
2 l bring	44
2 l buy	26
2 l charging	-28
2 l cinco	26
2 l corta	37
2 l count	-41
2 l cover's	43
2 l day	-60
2 l dirt	20
2 l drawer	-42
2 l eyes	-35
2 l flashes	-29
2 l flat	-36
2 l forward	52
2 l fourteen	-29
2 l from	-29
2 l get	23
2 l gets	52
2 l grade's	21
2 l hall	27
2 l has	16
2 l homeruns	16
2 l in	-22
2 l is	17
2 l it	25
2 l jumper	-28
2 l just	15
2 l kept	29
2 l landing	28
2 l last	71
2 l leg	-41
2 l low	16
2 l makes	-22
2 l maybe	68
2 l minus	28
2 l missing	17
2 l need	28
2 l not	-15
2 l number	-51
2 l of	-57
2 l only	-22
2 l order	24
2 l other	20
2 l out	-18
2 l paddock	-16
2 l panel	-47
2 l past	-26
2 l plan	-25
2 l quarter	40
2 l rack	-28
2 l ran	33
2 l sags	19
2 l see	34
2 l slope's	31
2 l so	20
2 l strike	-20
2 l swap	30
2 l takes	-49
2 l the	69
2 l then	-38
2 l there's	-66
2 l thing	-51
2 l took	26
2 l type	-25
2 l up	15
2 l us	-23
2 l use	15
2 l want	26
2 l wants	48
2 l was	38
2 l with	20
2 l zone	-40
2 l. #	35
2 l. 's	38
2 l. (	21
2 l. ,	18
2 l. -	-26
2 l. -ed	19
2 l. /	-26
2 l. 1	15
2 l. one	25
2 l. unit	-65
2 parts	47
2 r 	-18
2 r ,	-21
2 r -	-20
2 r 3	-18
2 r :	-33
2 r advil	-21
2 r after	-35
2 r against	20
2 r and	-22
2 r at	89
2 r bad	16
2 r blinds	27
2 r broken	-18
2 r by	-21
2 r came	22
2 r can	-23
2 r cement	-19
2 r connections	-16
2 r decks	19
2 r don't	33
2 r done	16
2 r doors	30
2 r extras	52
2 r faced	-19
2 r fall	36
2 r fifty	17
2 r five	24
2 r forty	22
2 r gang	-77
2 r guys	-36
2 r had	-20
2 r hall	19
2 r helpers	-35
2 r high	20
2 r hinges	19
2 r homeruns	-33
2 r i	27
2 r if	32
2 r in	31
2 r is	-29
2 r kinds	-29
2 r ladders	15
2 r last	38
2 r left	33
2 r lights	-28
2 r man	-19
2 r more	51
2 r new	21
2 r niches	22
2 r o'clock	-18
2 r of	86
2 r one	-41
2 r or	42
2 r out	44
2 r panel	-42
2 r part	-59
2 r proud	21
2 r pulled	28
2 r put	-17
2 r set	-22
2 r shakes	-20
2 r sides	-30
2 r slope	17
2 r so	23
2 r speeds	-18
2 r spots	-23
2 r stage	-40
2 r stakes	18
2 r stars	-24
2 r steps	-37
2 r strikes	-16
2 r studs	25
2 r sugars	-20
2 r the	-32
2 r then	-33
2 r there	24
2 r thirty	19
2 r three	-27
2 r to	48
2 r together	-29
2 r tomorrow	-18
2 r under	15
2 r usb	20
2 r ways	-21
2 r were	41
2 r where	20
2 r window	-38
2 r windows	28
2 r wrongs	-38
2 r x	-28
2 r. #	-18
2 r. ,	-21
2 r. -	-20
2 r. :	-33
2 r. n't	24
2 r. one	55
2 r. word	28
20 figures 2	15
20 l ,	28
20 l -	-26
20 l .	-28
20 l 3	-20
20 l a	71
20 l and	31
20 l at	29
20 l be	33
20 l bogeyed	-22
20 l by	24
20 l ch	-25
20 l ckts	-20
20 l code	-25
20 l cr	-17
20 l cut	18
20 l delta's	42
20 l drew	-30
20 l error	-25
20 l every	57
20 l flat	45
20 l for	-40
20 l front	60
20 l gap's	-30
20 l go	24
20 l got	29
20 l head	18
20 l hearth's	33
20 l house	-32
20 l in	-34
20 l is	39
20 l it	18
20 l item	-16
20 l lad's	-22
20 l me	-26
20 l need	22
20 l on	-20
20 l one	25
20 l packers	-19
20 l pier	-43
20 l plan	37
20 l pull	15
20 l pulling	18
20 l r	-76
20 l read	17
20 l reading	21
20 l said	24
20 l says	26
20 l seat's	-34
20 l set	43
20 l so	18
20 l span's	20
20 l sweet	-18
20 l tag	-28
20 l that's	-24
20 l then	49
20 l to	-48
20 l turned	-15
20 l turning	-18
20 l under	27
20 l used	24
20 l wants	-23
20 l was	-38
20 l your	-47
20 l. ,	28
20 l. -	-26
20 l. -ing	32
20 l. .	-28
20 l. 1	-20
20 l. letter	-67
20 l. one	16
20 l. unit	57
20 l. word	24
20 parts	29
20 r 	24
20 r -	-30
20 r .	37
20 r after	54
20 r at	21
20 r banksia	-20
20 r boards	16
20 r bucks	-46
20 r by	25
20 r c	-34
20 r centers	18
20 r doors	17
20 r down	-81
20 r even	20
20 r five	-41
20 r going	-34
20 r heads	17
20 r hot	-25
20 r i	18
20 r ninety	-59
20 r ninth	-23
20 r no	33
20 r oc	22
20 r of	27
20 r off	-44
20 r on	23
20 r one	55
20 r out	33
20 r outta	21
20 r second	-26
20 r since	-29
20 r smokes	-20
20 r so	28
20 r then	-29
20 r toilets	32
20 r twelve	-17
20 r two	-34
20 r wafers	20
20 r we	21
20 r with	21
20 r. #	24
20 r. -	-30
20 r. -s	51
20 r. .	37
20 r. letter	20
20 r. one	-116
20 r. word	35
20 words round	-30
5 l 	36
5 l 
	-41
5 l ,	54
5 l :	20
5 l a	-35
5 l about	-33
5 l add	19
5 l after	-37
5 l all	17
5 l and	-30
5 l another	27
5 l apt	-28
5 l at	-54
5 l b	-17
5 l back	25
5 l bay	-30
5 l be	36
5 l bed	-25
5 l bldg	-37
5 l boring	-27
5 l bring	25
5 l brought	43
5 l by	-52
5 l class	-25
5 l code	-44
5 l cover's	16
5 l cut	17
5 l day	-48
5 l den	17
5 l dock	-20
5 l done	21
5 l door	-36
5 l down	37
5 l elevator	-20
5 l exterior	-16
5 l feeder	-18
5 l finished	-23
5 l five	-18
5 l flashes	-47
5 l flat	-33
5 l foot	25
5 l for	58
5 l found	15
5 l front	24
5 l full	31
5 l g	-19
5 l gate	-15
5 l get	51
5 l gimme	84
5 l has	33
5 l have	22
5 l he's	-15
5 l hole's	29
5 l hour's	-52
5 l house	-16
5 l hub	24
5 l is	28
5 l it	69
5 l kept	16
5 l kitchen	30
5 l knock	22
5 l ladder	-20
5 l leaves	39
5 l left	36
5 l level	-41
5 l line	-53
5 l loop	-42
5 l lp	-32
5 l lvl	-42
5 l make	17
5 l man's	-39
5 l me	19
5 l mode	-39
5 l necesito	38
5 l need	25
5 l not	52
5 l note	-20
5 l nozzle	-38
5 l number	-54
5 l of	-33
5 l on	43
5 l one	-16
5 l only	66
5 l other	65
5 l out	47
5 l over	94
5 l p	-32
5 l pan's	18
5 l part	-31
5 l pin	-16
5 l profile's	23
5 l pulled	19
5 l pump	-19
5 l put	-15
5 l ratio's	48
5 l rolled	-39
5 l room	-47
5 l said	34
5 l says	18
5 l scaff	33
5 l set	19
5 l setting	-20
5 l shelf	-40
5 l short	65
5 l shot	-22
5 l sister	29
5 l slide	-46
5 l stage	-16
5 l still	49
5 l strike	-24
5 l switch	-38
5 l that	26
5 l the	-49
5 l then	-25
5 l there	-16
5 l throw	20
5 l till	-25
5 l took	23
5 l two	-17
5 l type	-22
5 l under	19
5 l unit	-39
5 l up	20
5 l us	41
5 l use	19
5 l used	21
5 l wants	26
5 l was	53
5 l wet	17
5 l zone	-70
5 l. #	29
5 l. ,	54
5 l. -s	85
5 l. /	-50
5 l. :	20
5 l. Name	-46
5 l. letter	-29
5 l. one	-74
5 l. unit	-67
5 r )	-42
5 r -	-24
5 r 2	26
5 r 3	-34
5 r 7	-29
5 r :	-25
5 r against	16
5 r and	24
5 r apart	70
5 r apiece	31
5 r at	39
5 r back	39
5 r baths	23
5 r batts	-64
5 r bays	-30
5 r be	23
5 r blade	-57
5 r bricks	-15
5 r broken	22
5 r burner	-54
5 r business	-15
5 r but	30
5 r by	-33
5 r came	-25
5 r closets	17
5 r corner	18
5 r corridor	-19
5 r crew	-17
5 r d	-17
5 r dimmers	25
5 r doors	-52
5 r dutchmen	25
5 r extra	50
5 r finish	-15
5 r for	23
5 r four	-51
5 r gets	-16
5 r gone	-38
5 r guys	-20
5 r hall	17
5 r has	-24
5 r heads	25
5 r high	48
5 r hole	-24
5 r hooks	31
5 r in	59
5 r is	-61
5 r ish	-16
5 r just	57
5 r layers	20
5 r leaks	16
5 r left	49
5 r lift	-27
5 r living	17
5 r loose	21
5 r more	49
5 r new	-17
5 r not	-26
5 r number	22
5 r o'clock	-44
5 r of	90
5 r off	23
5 r outlets	17
5 r over	15
5 r parts	52
5 r per	55
5 r ready	-17
5 r receps	19
5 r refused	-27
5 r ring	-29
5 r says	-17
5 r screens	43
5 r shingles	-25
5 r should	21
5 r spaces	35
5 r square	-42
5 r stars	-22
5 r still	64
5 r strikes	-39
5 r ten	25
5 r the	-79
5 r then	-31
5 r they	33
5 r thick	19
5 r things	-18
5 r times	-66
5 r today	-32
5 r tomorrow	-42
5 r tries	56
5 r tripped	-21
5 r under	-22
5 r walls	17
5 r way	-56
5 r went	25
5 r will	46
5 r windows	16
5 r with	-53
5 r x	26
5 r. )	-42
5 r. -	-24
5 r. -ing	25
5 r. -s	43
5 r. 1	-19
5 r. :	-25
5 r. n't	-25
5 r. one	-39
5 r. unit	17
5 r. word	17
60 figures 2	19
60 l 	-21
60 l $	-30
60 l -	-59
60 l a	36
60 l about	-25
60 l around	55
60 l at	63
60 l be	18
60 l bin	-38
60 l breaker	-24
60 l bus	-21
60 l by	17
60 l cold's	36
60 l cover	18
60 l do	-17
60 l door	25
60 l dynamic	20
60 l eleven	-16
60 l error	-24
60 l every	52
60 l exit	-15
60 l got	16
60 l had	-40
60 l he's	-88
60 l height's	18
60 l house	74
60 l in	-29
60 l is	60
60 l it	-33
60 l left	-32
60 l limit's	-30
60 l lot	-23
60 l measure	-36
60 l need	23
60 l needs	16
60 l net	-39
60 l new	-16
60 l not	33
60 l number	-61
60 l of	19
60 l off	-17
60 l on	-22
60 l ones	41
60 l out	27
60 l plate	25
60 l po	-17
60 l r	-22
60 l reading	22
60 l rule	-28
60 l say	23
60 l says	26
60 l sch	-49
60 l serving	-16
60 l set	47
60 l sixty	-18
60 l slip	-18
60 l studio	-26
60 l talks	-38
60 l that's	15
60 l through	29
60 l title	-15
60 l to	27
60 l top	-24
60 l turned	-18
60 l up	-57
60 l vikings	-23
60 l was	19
60 l with	41
60 l x	28
60 l. #	-21
60 l. $	-30
60 l. 's	36
60 l. -	-59
60 l. -ing	35
60 l. one	-32
60 l. unit	51
60 l. word	26
60 parts	15
60 r .	41
60 r 2	17
60 r :	-17
60 r a	27
60 r across	20
60 r again	-16
60 r all	27
60 r an	-38
60 r at	39
60 r baffles	15
60 r batts	-25
60 r blades	28
60 r both	26
60 r bucks	-34
60 r chance	-15
60 r dollars	-16
60 r down	79
60 r fifty	-46
60 r for	-28
60 r forms	-15
60 r forty	-32
60 r front	47
60 r going	-61
60 r high	22
60 r is	-50
60 r just	15
60 r modules	21
60 r no	-28
60 r not	34
60 r nothing	-28
60 r now	-27
60 r oc	24
60 r of	30
60 r off	-27
60 r on	-71
60 r or	-24
60 r packers	-23
60 r right	-27
60 r second	-46
60 r seven	-25
60 r should	32
60 r so	36
60 r space	19
60 r square	35
60 r that	19
60 r the	-16
60 r then	38
60 r there	-30
60 r thick	21
60 r three	36
60 r voices	-24
60 r wide	25
60 r x	28
60 r. 's	16
60 r. -s	-19
60 r. .	41
60 r. :	-17
60 r. letter	36
60 r. one	-89
60 r. unit	16
60 r. word	51
60 words	22
99 figures 2	41
99 l 	-18
99 l $	-31
99 l -	23
99 l a	-16
99 l about	21
99 l an	-61
99 l at	47
99 l by	17
99 l got	-27
99 l headroom's	25
99 l height	40
99 l him	22
99 l humidity's	28
99 l in	-17
99 l it	-20
99 l job	-32
99 l of	-32
99 l only	17
99 l over	-30
99 l past	49
99 l psalm	-28
99 l rh	16
99 l roughly	35
99 l says	-36
99 l she's	-46
99 l sixteen	-18
99 l sleeper's	16
99 l static	43
99 l temp	17
99 l that	-34
99 l to	33
99 l under	49
99 l was	27
99 l we're	-24
99 l with	-21
99 l. #	-18
99 l. $	-31
99 l. 's	29
99 l. -	23
99 l. -ing	30
99 l. -ly	45
99 l. -s	-24
99 l. one	-52
99 l. unit	-30
99 l. word	38
99 parts	-27
99 r ,	39
99 r -	16
99 r a	-28
99 r an	-16
99 r and	-31
99 r bucks	-31
99 r dynamic	20
99 r flowing	25
99 r is	-26
99 r lower	18
99 r next	-27
99 r out	39
99 r panhead	-29
99 r problems	-26
99 r rough	22
99 r so	32
99 r we're	-48
99 r. ,	39
99 r. -	16
99 r. -ing	25
99 r. -s	-34
99 r. unit	-21
999 0figures 4	-50
999 l 	-26
999 l $	-24
999 l ,	-21
999 l a	-20
999 l about	51
999 l amp	33
999 l and	73
999 l at	41
999 l count's	15
999 l every	25
999 l extension's	-35
999 l for	26
999 l from	23
999 l go	-26
999 l going	41
999 l had	-20
999 l in	-51
999 l interpass	23
999 l invert's	36
999 l it	-20
999 l kid's	-27
999 l knocked	-23
999 l laid	30
999 l leg	47
999 l limit's	53
999 l neutral's	25
999 l no	37
999 l nobody's	-52
999 l not	-25
999 l number's	-60
999 l one	-22
999 l out	46
999 l panel's	15
999 l pressure's	-40
999 l put	-41
999 l reading	26
999 l reads	29
999 l recirc	46
999 l rise	58
999 l riser	32
999 l rm	-42
999 l room	-42
999 l section	-30
999 l set	20
999 l shows	19
999 l since	-22
999 l spacing	20
999 l suction's	16
999 l suite	-31
999 l the	-82
999 l there	-37
999 l there's	15
999 l those	21
999 l to	50
999 l two	34
999 l two's	26
999 l voltage	67
999 l volts	29
999 l wall's	20
999 l wants	20
999 l was	-45
999 l. #	-26
999 l. $	-24
999 l. 's	38
999 l. ,	-21
999 l. -ed	-26
999 l. -ing	38
999 l. -s	73
999 l. 1	-26
999 l. unit	-34
999 oh	-46
999 parts	21
999 r ,	27
999 r -	-37
999 r .	28
999 r 555	-18
999 r :	-15
999 r a	-45
999 r above	30
999 r already	-35
999 r and	33
999 r area	-36
999 r base	37
999 r before	-18
999 r block	-28
999 r bucks	-27
999 r by	17
999 r centres	19
999 r common	37
999 r double	-27
999 r down	25
999 r end	20
999 r every	-25
999 r for	-42
999 r give	44
999 r going	70
999 r he'll	-22
999 r head's	16
999 r high	36
999 r hinge	-17
999 r i	16
999 r is	-17
999 r limiter	40
999 r max	23
999 r net	-46
999 r not	29
999 r number	-19
999 r of	73
999 r one	20
999 r over	-53
999 r return's	23
999 r screws	15
999 r so	-37
999 r the	24
999 r to	35
999 r today	26
999 r two	-17
999 r wire	-20
999 r x	16
999 r. 's	45
999 r. ,	27
999 r. -	-37
999 r. .	28
999 r. 1	-41
999 r. :	-15
999 r. Name	-24
999 r. letter	33
999 r. unit	-38
999 r. word	22
999 swallowed round	-16
999 words	41
999 words round	44
9999 figures 4	-66
9999 figures 5	-22
9999 l 	-19
9999 l ,	-30
9999 l asking	-20
9999 l at	96
9999 l bath's	18
9999 l by	-21
9999 l ceiling's	17
9999 l deductible's	-31
9999 l for	-24
9999 l from	-35
9999 l had	50
9999 l hundred	-21
9999 l is	-42
9999 l lintel's	26
9999 l switch	-17
9999 l the	-24
9999 l to	16
9999 l want	-40
9999 l was	45
9999 l x	35
9999 l. #	-19
9999 l. 's	44
9999 l. ,	-30
9999 l. -ing	-22
9999 l. letter	35
9999 l. one	-21
9999 l. word	-19
9999 r already	-20
9999 r in	-31
9999 r it'll	-33
9999 r long	30
9999 r maple	-25
9999 r off	17
9999 r on	50
9999 r side	-17
9999 r the	18
9999 r to	40
9999 r today	-16
9999 r. unit	-38
9999 r. word	-15
9999 words	-20
9999 words round	37
: head 0	32
: head none	34
@ head none	18
Name head none	-96
a a	-37
a aa	21
a about	-53
a above	28
a across	28
a act	-31
a acts	-32
a adds	-26
a adjustable	23
a advil	-21
a again	-55
a against	32
a ain't	27
a alarm	-18
a alder	-19
a all	-59
a along	22
a already	-18
a also	28
a am	-16
a amp	-18
a an	-89
a anchors	23
a and	47
a anodes	30
a another	-28
a anything	27
a apart	74
a apiece	31
a are	36
a area	-23
a argue	-19
a arms	-19
a around	-17
a as	-45
a ask	-38
a at	17
a away	-33
a b	-41
a back	36
a backs	-21
a bad	24
a baffles	15
a bales	-66
a ballasts	29
a balusters	-24
a banksia	-30
a bar	17
a base	39
a bath	45
a bathroom	-42
a baths	32
a batts	-69
a be	50
a bedroom	-23
a behind	30
a bends	22
a bent	19
a bifolds	24
a birch	-34
a bit	16
a black	49
a blades	27
a blanks	27
a blew	-36
a blinds	16
a blocks	65
a blue	-59
a boards	78
a bolt	20
a bone	-18
a books	-29
a boot	-19
a boots	-24
a both	31
a bottom	58
a bought	50
a box	-20
a bracket	19
a braille	29
a brass	59
a break	-21
a brg	18
a bridge	-52
a bring	24
a broken	21
a bronze	32
a brought	26
a brown	19
a bucks	-85
a built	-33
a bulbs	15
a burned	27
a burner	-54
a bushing	22
a business	-26
a bust	-22
a but	64
a buzz	25
a buzzer	-27
a by	28
a bye	-25
a c	-38
a cabinet	-15
a cable	-60
a call	-35
a called	-15
a calling	-30
a came	32
a can	54
a can't	-28
a cans	36
a cant	-54
a caps	17
a carry	-36
a case	29
a cash	-25
a casing	26
a caulk	28
a cb	-25
a cedar	-15
a ceiling	27
a cells	31
a center	55
a centers	49
a centimeter	23
a centre	24
a centres	22
a chance	-18
a change	-36
a check	35
a chimney	29
a chipped	53
a chippy	-48
a circuit	16
a circus	-31
a city	-15
a clamps	26
a clear	86
a client	-27
a clips	51
a clock	-29
a closed	48
a closet	33
a cm	-19
a coats	-33
a code	43
a color	-41
a come	-21
a comes	-23
a coming	59
a common	25
a complete	-29
a concrete	-41
a connections	-16
a contact	18
a corbels	-23
a cord	-18
a corner	52
a could	-25
a count	54
a country	-42
a court	-16
a cove	16
a crack	-36
a cracked	83
a creams	-19
a crew	-96
a crows	-34
a damaged	40
a dash	18
a day	-77
a days	-42
a de	62
a dead	22
a deck	-25
a decks	49
a deep	80
a degree	23
a degrees	-17
a dehu	26
a dentists	-90
a deny	-20
a desk	37
a dimmers	20
a dirt	19
a discharge	-31
a disposal	-51
a do	19
a doce	62
a dock	-26
a dollar	-53
a dollars	-22
a don't	-31
a done	-17
a dos	40
a dot	-44
a down	-52
a dozen	-71
a drawer	-26
a drawing	21
a drew	-36
a drip	34
a driveway	-15
a driving	-30
a drop	23
a drops	20
a dryer	-21
a dump	48
a dumpster	-23
a dutchmen	25
a dynamic	20
a each	73
a easter	-29
a edge	46
a eggshell	30
a eighteen	16
a eights	21
a eighty	-19
a either	-24
a elbows	36
a eleven	-19
a eleventh	-48
a elm	-33
a elsewhere	17
a em	67
a emer	25
a ends	52
a enough	16
a euro	-84
a even	58
a every	30
a everybody	-40
a everywhere	-28
a except	32
a expansion	16
a extra	40
a extras	52
a faced	-19
a faces	-30
a factory	15
a fair	-20
a fall	32
a falls	-30
a far	72
a faucet	-16
a fault	-31
a feed	-28
a few	23
a field	52
a fill	31
a filter	25
a find	-35
a fine	38
a fingers	-25
a fire	-19
a firebrick	38
a fit	43
a fix	-69
a fixed	-29
a flapper	-58
a flashing	40
a flat	43
a flex	-27
a flicker	34
a floor	-20
a flow's	18
a flowing	35
a foam	-46
a fogged	28
a foot	53
a footer	18
a footers	42
a for	17
a form	29
a forms	-15
a forty	-26
a forward	-37
a four	-26
a fourteen	61
a framed	-49
a friday	17
a fridays	-25
a front	36
a frost	-22
a ft	-33
a full	17
a furnace	-57
a g	25
a gallon	-24
a game	-20
a gang	-57
a gary	22
a gasket	16
a gaskets	15
a gate	-40
a gauge	20
a get	-30
a gets	-22
a give	59
a glass	41
a glue	-28
a glued	-22
a go	63
a goat	-25
a gone	-53
a gonna	18
a good	58
a grade	37
a grate	-40
a grease	-25
a grille	-90
a grit	23
a ground	-26
a grout	50
a gun	-26
a guy	-30
a guys	-62
a had	-19
a haggles	-22
a hair	35
a hall	94
a hand	-19
a handle	-68
a hang	32
a hangers	65
a hardware	15
a has	-92
a hauf	-17
a haul	-69
a have	30
a he	-76
a he'll	-15
a he's	-87
a head	-62
a head's	16
a heads	79
a heater	25
a heave	-23
a helpers	-35
a her	18
a here	49
a high	108
a him	-56
a hinges	-32
a hire	-21
a his	-16
a hit	-35
a hole	-73
a home	-17
a hooks	17
a hot	20
a hours	-29
a house	21
a hr	-65
a hums	-60
a hundred	35
a hundreds	-23
a hydro	-33
a i	-51
a i've	18
a id	-29
a idlers	51
a if	-22
a inch	18
a inches	19
a inside	-20
a instead	31
a iron	-39
a is	-44
a ish	-17
a it	-31
a it'll	-35
a it's	-72
a joint	23
a juniper	-27
a just	28
a keep	22
a key	-45
a kg	-16
a kid	-22
a kinds	-39
a kit	25
a knocked	-25
a l	31
a label	-18
a labeled	20
a lace	15
a ladder	-43
a ladders	16
a lady	16
a laid	24
a lamp	25
a landing	48
a larch	-21
a laser	46
a last	24
a late	-37
a later	20
a latest	-33
a laundromats	-22
a laundry	15
a lawsuit	-29
a lay	30
a layer	-74
a layers	20
a layout	25
a leave	26
a left	53
a leg	54
a legs	39
a length	34
a let	-19
a lid	21
a lift	-61
a light	23
a lights	-19
a like	-61
a lime	43
a limiter	40
a linear	17
a litre	26
a live	17
a living	24
a load	-16
a loaded	-27
a location	46
a lol	-67
a long	117
a look	-31
a lost	22
a lot	-49
a louvres	18
a love	-32
a low	18
a lower	24
a lunch	-16
a mailbox	-32
a main	-22
a make	-34
a man	-37
a manifold	18
a manual	-32
a maple	-50
a masons	-20
a match	23
a mate	-35
a matt	27
a max	63
a me	-21
a medium	-51
a men	-15
a metal	-38
a meter	30
a metres	24
a middle	52
a midspan	19
a mill	-22
a minimum	25
a minute	-39
a minutes	-35
a mm	25
a modules	21
a molding	-34
a monday	-22
a month	23
a more	98
a morning	-65
a mosaic	-23
a move	22
a moved	-63
a moves	-22
a muppet	-19
a my	26
a n	100
a nails	35
a need	45
a needs	-69
a net	-46
a never	-33
a next	-32
a niches	22
a night	-61
a nine	-32
a nineteen	-15
a ninth	-24
a no	-15
a nobody's	-25
a noon	-45
a north	22
a nos	21
a nose	45
a not	-38
a nothing	-33
a nozzle	23
a nuts	19
a o	-18
a o'clock	-75
a obscure	16
a oc	45
a oclock	-26
a of	30
a office	-47
a offset	-22
a oh	-17
a ok	-19
a old	37
a one	-17
a ones	27
a open	20
a opener	-26
a opening	51
a opens	-26
a order	42
a ordered	27
a other	-37
a ought	62
a ounce	25
a out	-25
a outlet	-17
a outlets	38
a outside	-22
a over	30
a pack	-22
a packers	-59
a paint	21
a painted	23
a painters	-18
a pan	24
a panel	-84
a panels	25
a panhead	-29
a park	-16
a part	-59
a parts	71
a pascals	16
a pass	-26
a past	-87
a pattern	-73
a pavers	16
a people	-17
a per	55
a picked	21
a piers	23
a pies	58
a pinched	-16
a pine	35
a plan	44
a plate	34
a plates	38
a platform	-19
a platforms	60
a play	-33
a please	21
a plenty	51
a plinth	26
a plug	-27
a plumber	-17
a plumbers	-26
a plus	-19
a plywood	29
a pm	-29
a pocket	33
a podium	-60
a point	-16
a points	16
a pole	-20
a pool	-48
a pop	-19
a pops	17
a porch	22
a pound	-17
a power	-22
a pressure	22
a primer	37
a problems	-26
a proud	18
a pull	18
a punch	-17
a put	-23
a quart	27
a quid	-26
a quiet	-22
a quit	-33
a rack	19
a radiator	20
a radio	-104
a rafters	15
a raining	-41
a raise	43
a ran	41
a rang	-24
a range	-77
a rattle	21
a read	22
a reads	-19
a ready	-45
a rear	-16
a receps	17
a receptacle	16
a receptacles	22
a recirc	35
a reducer	29
a reducers	33
a refused	-27
a remain	16
a replaced	-22
a required	-28
a reset	-30
a rest	21
a return's	32
a right	-32
a ring	46
a rise	19
a road	30
a roof	-30
a room	20
a rooms	15
a ropings	-25
a round	19
a rub	40
a rubber	23
a run	26
a running	40
a runs	-17
a safe	39
a safety	-46
a said	-51
a saints	-39
a sand	32
a saying	-16
a says	-22
a screen	25
a screens	38
a screwed	16
a sealed	25
a second	-30
a seeds	-32
a serving	-16
a set	-16
a seventeen	-16
a seventh	-17
a seventy	35
a shakes	-18
a sharp	-38
a she	28
a she's	-23
a shed	28
a sheets	20
a shelves	-24
a shift	-47
a shimmed	36
a shims	26
a shingles	-18
a short	83
a should	68
a shower	-31
a shows	-22
a shut	-18
a side	41
a sides	-18
a siding	35
a signed	-48
a silicone	-33
a sill	27
a sills	16
a since	-20
a sink	32
a sits	-16
a sixteen	108
a sixteenths	-17
a sixty	-18
a skip	-18
a slats	-26
a slope	58
a slow	-48
a smokes	-20
a so	45
a sockets	-24
a some	26
a something	-27
a sorry	-22
a space	20
a spacer	-25
a spaces	35
a spare	27
a spares	30
a speeds	-18
a spots	-31
a spout	19
a spraying	25
a spring	-40
a sprinkler	18
a square	-36
a st	-33
a stage	-40
a stainless	16
a stair	-16
a stakes	18
a stars	-45
a start	-17
a started	-34
a starting	-23
a stay	-37
a steep	45
a step	-42
a steps	-16
a still	-40
a stock	27
a stone	-24
a stool	-45
a stops	-17
a straight	-32
a strikes	-56
a strings	35
a studs	82
a style	16
a subcool	36
a sugars	-20
a sunday	-49
a superheat's	21
a supplier	-20
a supply	39
a sure	-17
a swap	24
a swapped	-32
a sweep	19
a switch	44
a table	17
a tag	-17
a take	48
a tall	35
a tap	27
a tape	48
a taped	23
a tempered	21
a template	-18
a tens	15
a that	-34
a their	-19
a then	-36
a theres	16
a these	48
a they	-26
a they're	36
a they've	16
a thick	40
a thing	-98
a things	-32
a thirteen	26
a this	-53
a though	16
a thousand	-31
a three	-22
a through	-24
a throughout	19
a thursday	-25
a ties	-21
a tighter	33
a tile	21
a tile's	41
a tiles	18
a time	-20
a times	-97
a tip	-20
a to	37
a toe	-28
a together	-69
a toilet	27
a toilets	34
a tonight	19
a too	-41
a took	-19
a torn	-25
a total	38
a touch	-17
a towel	22
a travelers	-20
a tread	-41
a treinta	37
a tries	53
a tripped	-33
a trips	-20
a truck	21
a tub	21
a tube	38
a tubs	26
a tuesday	-44
a tune	-16
a turned	-31
a turns	16
a two	33
a twos	29
a type	83
a u	-25
a uncles	-20
a under	-27
a underside	22
a unit	-23
a until	32
a up	22
a us	-67
a usb	22
a use	21
a used	49
a v	-33
a vanity	-25
a vent	16
a vents	-15
a vinyl	17
a voices	-24
a wafers	22
a wall	49
a walls	35
a want	45
a wanted	16
a was	-25
a washer	-22
a waste	49
a water	-53
a watt	36
a wax	-34
a way	-61
a we	23
a wednesday	25
a week	-17
a weekend	46
a were	26
a what	27
a whatever	-36
a where	45
a which	33
a while	26
a white	28
a who	-20
a wi	-17
a will	59
a window	-51
a windows	30
a wiped	-26
a wire	-19
a wire's	26
a wires	17
a wood	-26
a work	44
a works	-33
a worth	-16
a would	-22
a wouldn't	-126
a wrongs	-38
a x	63
a y	40
a yard	-98
a year	-36
a yesterday	17
a yet	-26
a you	-31
a you're	31
a zip	-49
b a	-43
b about	29
b above	28
b absent	-48
b acid	-32
b across	29
b acts	-32
b add	76
b address	-20
b adds	35
b adhesive	23
b again	-32
b against	45
b air	25
b aisle	-17
b alarm	-31
b alarm's	-21
b allow	90
b alone	-24
b already	32
b alright	-17
b amp	90
b amps	95
b an	-40
b and	15
b another	-27
b any	23
b anything	28
b apart	56
b apiece	36
b apprentice	-58
b apt	-46
b aquastat	34
b architect	47
b are	72
b area	-19
b arm	-18
b around	-34
b arrived	43
b ask	-16
b asked	33
b asking	-20
b attic	-16
b away	19
b b	-60
b back	-21
b backfill	57
b badge	-57
b baffles	15
b bakkie	-19
b bar	49
b bars	31
b basement	-52
b basin's	28
b batten	28
b battery's	-44
b bay	-59
b bays	-74
b beam	18
b bearing	-20
b bearings	51
b because	44
b bed	-47
b bedroom	-55
b bedrooms	-28
b before	-27
b belts	21
b beltway	-85
b bench	36
b bent	28
b bet	-22
b better	29
b between	-61
b bid	-48
b big	-75
b billed	-23
b bin	-37
b birdied	-24
b black	39
b blacks	-36
b blast	23
b bldg	-39
b blew	18
b blinds	19
b blood	-79
b blow	44
b blower	24
b blown	-20
b board's	-16
b boards	45
b bogeyed	-22
b bolts	45
b bond's	-21
b book	16
b booked	-34
b boring	-27
b boss	-41
b both	-40
b bottom's	18
b bought	51
b bout	33
b bracket	-25
b bracket's	-32
b brackets	34
b brass	16
b break	18
b breaker	-49
b breaker's	64
b breakers	38
b bring	125
b bringing	29
b broke	103
b bronze	16
b brought	83
b brushed	-20
b building	-35
b built	-30
b bulb	20
b bump	27
b bundles	87
b bunnings	-20
b burned	33
b bus	-24
b busted	-32
b but	31
b buy	67
b buzz	59
b by	-18
b call	38
b calls	27
b cam	-54
b came	87
b camera	-21
b can	26
b cans	24
b capacitor's	18
b caps	23
b card	18
b carpet	-29
b carton	20
b cases	30
b casing	-21
b cat	-21
b caulk	-31
b cause	23
b cbd	16
b ceiling's	17
b cell	-22
b center	34
b cfm	49
b ch	-36
b changed	40
b channel	-48
b charge	-43
b charged	-57
b charging	-28
b chelsea	-18
b chimney	-27
b chlorine's	52
b choir's	-39
b cinco	29
b circuit	-79
b ckts	-44
b class	-37
b cleaned	29
b clips	32
b close	41
b closer	29
b closes	-41
b coat	-28
b code	-47
b code's	-57
b cold	39
b cold's	36
b collar	35
b color	-24
b colour	-26
b column	-38
b come	24
b coming	-18
b compacted	30
b compaction's	21
b control	35
b corner	45
b correction	16
b corta	74
b count's	39
b counted	-40
b counter	-47
b counter's	43
b counts	44
b cover	48
b cover's	71
b covers	16
b cr	-19
b cracked	43
b crane's	-33
b credit	16
b crowned	29
b curb's	29
b curtain's	-22
b curve	18
b customer	-30
b cut	106
b cutout	16
b cycle	-16
b cylinder	15
b damper	17
b dash	-33
b dates	-20
b day	-80
b days	43
b deal	-42
b deck	20
b deductible's	-31
b degrees	21
b delta's	42
b den	47
b desk	-47
b detail	-16
b diagonals	82
b dialed	21
b didn't	-19
b digits	-56
b dimmers	57
b dining	-18
b dip	-32
b dirt	32
b dispenser	22
b display	-65
b do	-50
b doc	-16
b dock	-20
b doing	-57
b don't	-60
b door	-65
b doors	-35
b dos	44
b double	-26
b dowel	33
b down	40
b downstairs	18
b draw	32
b drawer	-50
b drawing	24
b draws	30
b drew	-32
b drop	66
b drop's	17
b dropped	15
b drops	39
b drove	19
b dry	60
b dryer	-15
b drywall	-47
b drywall's	30
b dump	19
b dumpsters	42
b dynamic	20
b e	-21
b each	74
b east	-19
b edge	37
b egress	-21
b eight	25
b eighteen	24
b eighth	24
b eighths	58
b eighty	-24
b elbows	23
b electrician	-26
b elevation	-24
b elevator	-77
b em	-37
b embed	41
b emt	23
b end	29
b end's	-37
b ended	37
b ends	-35
b entry	-19
b epoxy	-41
b error	-51
b exam	-29
b except	23
b exit	-56
b expansion	15
b expires	-88
b exposure's	57
b extension	-24
b extension's	-35
b exterior	-45
b eyes	-35
b fall	-15
b fall's	17
b falls	-38
b far	30
b fault	-19
b feeder	-17
b feeding	20
b feeds	-22
b feet	29
b fell	46
b field	-29
b fifteen	74
b fifty	15
b figure	35
b filter	19
b filters	-15
b final	-15
b finished	-20
b first	48
b fitted	-16
b fix	-30
b fla	16
b flange	18
b flashes	-106
b flat	-47
b flew	-16
b flight	-63
b flights	-23
b floor	-33
b floor's	19
b flowing	55
b flue	34
b foot	25
b footer	-23
b footers	23
b footing's	29
b form	26
b forty	16
b found	50
b four	33
b fourteen	47
b fourth	-49
b framing	-20
b friday	-26
b from	-22
b front	37
b ft	23
b g	-35
b gallon	16
b gallons	-43
b game	-19
b gap	21
b gap's	-23
b garage	65
b gas	-65
b gate	-88
b gates	27
b gauge	39
b gauged	19
b gave	51
b generator	60
b get	64
b gets	61
b gimme	86
b give	-36
b gives	-38
b giving	-15
b glue	33
b go	21
b goal	-32
b goin	-15
b good	18
b got	23
b gr	43
b grab	39
b grabbed	16
b grade's	16
b gray	-32
b green	-34
b grille	21
b grit	40
b grout's	61
b gutter's	-20
b guy	23
b guys	-30
b half	29
b hall	39
b hallway	19
b handrail's	33
b hang	16
b hangers	32
b hank	-23
b happy	-89
b hard	15
b hardware	-49
b has	56
b hatch	-35
b haul	-64
b have	41
b he	-104
b he'll	-26
b he's	-179
b head	55
b head's	36
b header	38
b header's	40
b headroom's	38
b hearth's	33
b heater	-17
b height	40
b height's	28
b held	37
b here	-46
b hes	-57
b high	67
b him	-76
b hinge	23
b hinges	-46
b his	-64
b hit	-41
b hits	25
b hob	15
b hole	-34
b hole's	74
b holes	21
b holiday	-17
b hook's	20
b hour	-53
b hour's	-97
b hours	-40
b house	-16
b how	30
b hub	23
b humidity	52
b humidity's	34
b hundred	36
b hung	60
b hwy	-38
b i	25
b i'd	37
b if	42
b in	-43
b inch	44
b inches	41
b inlet's	33
b innings	-18
b inside	43
b inspector	-50
b install	-31
b interpass	23
b invert's	36
b invoice	-50
b ipad's	-33
b is	-16
b island	47
b it	30
b it'll	22
b it's	-55
b item	-33
b items	-39
b j	26
b jack's	18
b jan	24
b job	-50
b joint	-18
b joists	39
b jumper	-83
b just	106
b k	-19
b kangaroos	-16
b keep	53
b kept	26
b key	-58
b keyed	-37
b kick	26
b kicks	110
b kid	-34
b kid's	-31
b kids	66
b kind	38
b kit	21
b kitchen	49
b kits	22
b knife	-16
b knocked	-24
b knots	37
b kpa	40
b l	16
b l1	-19
b l2	-22
b laborer	16
b lad's	-22
b ladder	-22
b ladder's	-19
b laid	45
b landing	28
b lands	-47
b lap	108
b last	16
b lb	27
b least	68
b leaves	84
b left	33
b leg	78
b lengths	20
b less	31
b let	-17
b level	-85
b lifted	38
b light	-16
b lights	39
b lime	19
b limit's	32
b line	-50
b lintel	24
b lintel's	26
b litres	25
b little	-24
b load's	-23
b loads	-19
b lockbox	-18
b locked	-28
b locker	-17
b lol	-21
b long	-84
b longer	-19
b look	-35
b loop	-41
b loose	41
b lost	20
b lot	-100
b lounge	49
b low	54
b lp	-32
b lp2	-44
b lumber	-21
b lumber's	-42
b lunch	-21
b lvl's	38
b m	-43
b made	-42
b make	96
b makes	-19
b man	-22
b man's	-39
b marble	29
b margin's	-16
b mark	-38
b marked	-41
b married	-17
b materials	-55
b max	31
b maximum	39
b maybe	45
b mc	18
b me	26
b mean	-15
b meant	19
b measure	-26
b measured	24
b measures	-23
b medallion	20
b medium	50
b meeting	-19
b meter	35
b metered	26
b metres	16
b mil	25
b mile	-22
b mils	16
b min	15
b minute	20
b minutes	-25
b mirror	26
b mirror's	22
b missing	36
b mix	59
b mixed	37
b mm	30
b mock	-23
b mode	-39
b model	-16
b modules	23
b moisture	81
b moisture's	42
b mon	-37
b moon	-16
b more	47
b morning	45
b move	32
b moved	-89
b mrs	-32
b mud	-37
b must	33
b my	-68
b nail	35
b nailed	19
b nails	30
b near	-21
b necesito	62
b need	96
b needs	74
b net	-38
b neutral's	25
b new	-24
b next	-55
b nine	-28
b nineteen	-57
b nineteen's	24
b ninth	-27
b no	35
b nobody	-49
b nobody's	-52
b none	34
b north	23
b not	20
b note	-51
b nothing	54
b now	64
b nozzle	-38
b number	-179
b number's	-95
b nursery	19
b ocean's	-31
b of	47
b off	-31
b offered	-84
b office	-35
b offset	16
b oh	-47
b ohm	34
b ohms	59
b oil	-42
b okay	-43
b old	-46
b ones	24
b only	83
b opening	30
b opening's	22
b opens	-31
b or	-29
b ordered	58
b ot	-19
b our	-53
b out	28
b oven	19
b over	16
b overhang's	23
b owe	-28
b owes	-16
b owner	-16
b owns	-22
b p	-43
b pack	-55
b packed	21
b packers	-19
b packs	72
b pad	30
b paddock	-16
b padlock's	-31
b page	-28
b paid	-24
b paint	-25
b paint's	-18
b painted	-38
b pan's	20
b panel	-20
b panel's	18
b pantry	-15
b paper	-39
b par	-20
b parked	-15
b parks	-23
b part	-54
b passed	-32
b past	-35
b patch	19
b pavers	27
b pay	-20
b pcs	-57
b percent	30
b permit	-32
b ph	21
b phase	-21
b phone	-28
b phone's	-30
b pick	39
b pickets	104
b piece	15
b pieces	32
b pier	-42
b pies	-25
b pin	-83
b pipe	48
b pipe's	16
b pitch	25
b pitched	-22
b place	-28
b plan	17
b plans	63
b plant	21
b plaster	16
b plastic	-22
b plates	22
b please	49
b plinth	34
b plot	-19
b plus	73
b po	-40
b point	-60
b pole	-27
b poly	-24
b pool	-24
b popped	-38
b port	-21
b pounds	50
b pour	-28
b poured	26
b power's	-27
b powerball	-17
b preheat	23
b profile's	23
b prv's	38
b psalm	-30
b pu	18
b pull	36
b pulled	-56
b pulling	46
b pulls	28
b pumped	63
b purlins	32
b put	69
b puts	29
b qty	57
b quarter	-34
b quiet	-17
b quit	-29
b quoted	-26
b r	-37
b race	-36
b rack	-64
b rafters	51
b rail	19
b rail's	37
b raise	61
b range	44
b rapid	-27
b rate's	-17
b rated	19
b rather	-18
b ratio's	88
b rcbo	19
b rcbo's	23
b re	-20
b reach	-19
b read	48
b reading	59
b reads	81
b rebar's	-17
b receptacles	18
b recirc	46
b red	-24
b register's	39
b relief	39
b rental	-46
b replace	50
b replaced	-15
b report	-22
b return	61
b return's	39
b returned	33
b rev	26
b reveal's	38
b rh	30
b right	-66
b ring	-18
b rip	29
b ripped	15
b rise	69
b riser	-36
b rm	-95
b rock	19
b rod	30
b rod's	24
b roll	-19
b rolled	-41
b rolls	-34
b room	-54
b rotors	-26
b roughed	21
b roughly	35
b round	-61
b row	-41
b rows	17
b rtu	-85
b run	36
b running	16
b runs	16
b s	23
b safe	-55
b sags	22
b same	-18
b sand	-39
b sat	23
b saturday	-40
b saves	-20
b saw	-18
b saying	29
b says	20
b scaff	33
b scale	-78
b sch	-41
b screws	20
b seal	-28
b seat	28
b seat's	-34
b section	-51
b send	-30
b sent	78
b service	19
b serving	-16
b set	149
b sets	-69
b setting	-26
b seventeen	-22
b seventy	82
b shave	38
b she	-55
b she'll	-71
b she's	-84
b shedding's	-29
b sheet	-45
b shell's	-31
b shelves	36
b shelving	-49
b shift	-18
b shift's	-30
b shld	21
b short	89
b shorted	75
b shot	15
b should	82
b should've	53
b shower	-37
b shows	71
b side	47
b sign's	29
b silicone	34
b sill	51
b sill's	54
b since	-77
b single	-15
b siri	-23
b sister	44
b site	-32
b six	45
b sixteen	17
b sixteenth	-44
b sixty	58
b skirting	-16
b slab	45
b slab's	43
b sleeper's	16
b slip	-18
b slope	-16
b slope's	31
b slump	98
b smokes	-26
b smoking	-34
b smoko	-47
b snake	-35
b snow	19
b so	35
b soft	23
b sold	68
b solid	-26
b some	35
b somebody	57
b something	-27
b sometime	-68
b somewhere	98
b space	20
b spaced	58
b spacing	54
b span's	21
b spare	19
b spec	58
b sphere	46
b splash	16
b spot	-16
b spring's	-32
b spurs	-16
b squares	37
b squeak	31
b stack	30
b stage	-34
b stainless	28
b stair	-36
b stairs	-21
b stairwell	18
b start	-38
b started	-58
b starter	26
b starting	-42
b starts	-20
b stat	17
b stat's	30
b static	105
b static's	50
b station	-20
b stem	41
b step	-29
b step's	43
b steps	-22
b sticks	41
b stirrups	76
b stitch	-20
b stock	20
b stock's	-30
b stone	34
b strike	-16
b string	27
b strip	-27
b strips	26
b stub	29
b stud	15
b studio	-21
b studs	59
b stuff	48
b sub	-21
b sub's	-17
b subcool	47
b subcool's	18
b subfloor	35
b subfloor's	20
b suction's	21
b suite	-37
b summer	-32
b superheat	29
b superheat's	48
b supply	39
b supply's	49
b swap	38
b sweet	-18
b swing	-27
b table	-97
b tag	-41
b tagged	-20
b take	-20
b takes	-27
b talks	-38
b tap	42
b team's	-51
b temp	81
b tempered	16
b ten	-26
b tenant	-28
b terms	-70
b test	-42
b tested	53
b th	-39
b than	49
b that	-28
b that'll	-19
b that's	-59
b the	-17
b their	-44
b them	16
b then	-52
b thermostat's	52
b they	-44
b they'll	-38
b they're	-87
b they've	-20
b thick	31
b thin	73
b thing	-30
b think	-17
b thinks	-22
b third	-19
b thirteen	56
b this	-47
b those	27
b though	24
b thousand	-38
b three	28
b throat's	53
b through	-19
b throw	42
b throwing	-27
b throws	-45
b thurs	-19
b thursday	-16
b ticket	-31
b tide's	-47
b tie	26
b ties	31
b tight	21
b til	-47
b tile	34
b till	-39
b time	-41
b times	-51
b tires	-32
b title	-15
b to	40
b toast	19
b toilet	40
b tomorrow	-60
b ton	31
b too	21
b took	19
b top	-27
b torque	51
b total	29
b tracking	-17
b trailer	-47
b trap	24
b tray	28
b tread	-40
b treads	26
b trim	27
b trimmed	27
b tripped	-27
b tripping	21
b truck's	-49
b tune	-82
b turned	-46
b turning	-18
b twenty	60
b two	19
b two's	18
b txt	-20
b type	-100
b u	-88
b unit	-106
b upsize	35
b upstairs	45
b upstand's	33
b use	38
b used	90
b utility	-16
b v	-23
b valve	67
b van	51
b vanity	60
b vent	38
b vikings	-42
b voices	-16
b voltage	73
b volts	38
b voted	-20
b wait	18
b waiting	17
b walk	-35
b wall	64
b wall's	35
b wallpaper	-18
b walnut	-41
b want	49
b wanted	34
b wants	52
b wardrobe	-52
b was	31
b wash	-35
b water's	32
b way	-41
b we	32
b we're	-51
b we've	18
b wednesday	-27
b wee	-39
b week	-30
b well	20
b went	28
b wet	68
b what's	-40
b when	27
b where	28
b wide	51
b width	27
b window	-67
b windows	25
b wire's	38
b with	44
b wo	-17
b won't	25
b wood	-22
b work	-25
b works	-15
b would	22
b wound	18
b x	44
b years	-38
b your	-40
b zero	-57
b zone	-75
b zz	-27
b ×	28
bare 0	-17
bare 1	-62
bare 2	52
bare 3	34
behind area area	23
behind area crews'	-73
behind area end	21
behind area mark	-82
behind area part	-41
behind area plain	-39
behind break mark	-107
behind crews' area	-16
behind crews' end	-64
behind crews' finish	-18
behind crews' material	52
behind crews' number	30
behind crews' part	54
behind crews' plain	18
behind crews' strange	55
behind crews' surface	34
behind crews' unknown	-52
behind crews' verb	-20
behind defect crews'	-22
behind defect plain	41
behind end area	-23
behind end crews'	33
behind end defect	117
behind end finish	-54
behind end fixture	36
behind end mark	-87
behind end part	63
behind end plain	34
behind end strange	-53
behind end verb	-61
behind finish area	-19
behind finish end	-28
behind finish mark	-29
behind finish verb	25
behind fixture defect	-28
behind fixture end	-37
behind fixture others'	-23
behind fixture verb	-17
behind mark break	-28
behind mark crews'	34
behind mark defect	21
behind mark end	-26
behind mark fixture	45
behind mark mark	-62
behind mark number	42
behind mark part	48
behind mark surface	-37
behind mark tool	15
behind mark unknown	42
behind material fixture	-43
behind material material	20
behind material others'	27
behind material plain	26
behind material unknown	47
behind number end	-37
behind number number	-44
behind number unknown	-20
behind others' end	78
behind others' finish	16
behind others' mark	114
behind others' part	-39
behind others' plain	40
behind others' role	-28
behind others' surface	-42
behind others' unknown	-34
behind part defect	-52
behind part mark	19
behind part material	-21
behind part plain	-46
behind part verb	-19
behind plain area	55
behind plain break	16
behind plain crews'	19
behind plain defect	37
behind plain end	42
behind plain finish	21
behind plain mark	68
behind plain material	64
behind plain number	22
behind plain part	25
behind plain strange	-45
behind plain surface	18
behind plain unknown	19
behind plain verb	25
behind role crews'	58
behind strange crews'	-22
behind strange mark	27
behind strange plain	-28
behind strange strange	-20
behind surface crews'	-16
behind surface defect	-36
behind surface end	55
behind surface fixture	28
behind surface others'	-16
behind surface part	-41
behind surface plain	-32
behind surface surface	23
behind tool end	-66
behind tool plain	-61
behind unknown end	-110
behind unknown mark	-55
behind unknown material	-34
behind unknown number	-50
behind unknown others'	-33
behind unknown part	-32
behind unknown plain	-52
behind unknown verb	46
behind verb break	16
behind verb crews'	-74
behind verb mark	20
behind verb material	-33
behind verb others'	-36
behind verb part	-19
behind verb plain	-33
behind verb strange	-17
behind verb verb	-21
claims 2	-48
counted head area	76
counted head crews'	16
counted head defect	-15
counted head finish	-19
counted head fixture	59
counted head material	119
counted head others'	-155
counted head part	114
counted head plain	-64
counted head role	-55
counted head strange	-99
counted head surface	56
counted head tool	49
counted head verb	-35
counted next defect	40
counted next fixture	38
counted next mark	-58
counted next material	65
counted next number	18
counted next others'	-25
counted next part	37
counted next role	-50
counted next strange	-67
counted next surface	-25
counted next tool	36
counted next work	-34
form 0figures 4	-50
form figures 2	43
form figures 4	-66
form figures 5	-45
form oh	-46
form parts	57
form swallowed round	-17
head 1	45
head 2	24
head 3	50
head none	-17
l of cars	-35
l of clock	-96
l of kin	-41
l of media	15
l of money	-55
l of papers	-39
l of past	27
l of phones	-48
l of roads	-104
l of school	-56
l of services	-30
l of sport	-30
l1 	33
l1 
	-98
l1 "	39
l1 #	-19
l1 $	-91
l1 (	22
l1 +	45
l1 ,	54
l1 -	-61
l1 .	20
l1 3	-17
l1 :	68
l1 @	19
l1 a	29
l1 about	36
l1 add	61
l1 adds	35
l1 after	-49
l1 against	36
l1 aisle	-17
l1 all	67
l1 allow	42
l1 amp	33
l1 an	-74
l1 and	92
l1 another	-22
l1 apartment	-24
l1 apt	-46
l1 are	43
l1 around	-30
l1 asking	-20
l1 at	21
l1 b	-28
l1 backfill	57
l1 bars	25
l1 bath	-80
l1 bath's	18
l1 bay	-96
l1 be	79
l1 beam	36
l1 bed	-48
l1 bedroom	-80
l1 been	35
l1 before	-31
l1 between	-27
l1 big	-62
l1 bin	-38
l1 bldg	-36
l1 bogeyed	-22
l1 boring	-27
l1 bottom	-38
l1 bottom's	18
l1 bought	76
l1 bout	33
l1 box	-20
l1 bracket	22
l1 breaker	-66
l1 bring	103
l1 broke	20
l1 brought	72
l1 building	-39
l1 bus	-24
l1 but	40
l1 buy	89
l1 by	19
l1 called	-17
l1 can	29
l1 cat	-26
l1 ceiling's	17
l1 ch	-36
l1 change	24
l1 channel	-42
l1 charging	-28
l1 cinco	26
l1 circuit	-88
l1 ckts	-20
l1 class	-27
l1 closet	30
l1 coat	-34
l1 code	-91
l1 code's	-51
l1 cold's	36
l1 correction	16
l1 corta	37
l1 count's	26
l1 counter	-22
l1 cover's	57
l1 cr	-19
l1 crowned	28
l1 cut	38
l1 day	-104
l1 deductible's	-31
l1 delta's	42
l1 den	17
l1 dirt	20
l1 do	-16
l1 dock	-20
l1 doing	-18
l1 done	20
l1 door	-51
l1 double	-34
l1 drawer	-42
l1 drew	-29
l1 drops	34
l1 drove	19
l1 dynamic	20
l1 e	-22
l1 each	-39
l1 edge	31
l1 eight	-16
l1 elevator	-21
l1 eleven	-28
l1 embed	41
l1 end's	-31
l1 error	-51
l1 every	28
l1 exit	-65
l1 expires	-50
l1 exposure's	57
l1 extension's	-35
l1 exterior	-24
l1 eyes	-35
l1 f	-20
l1 fall's	17
l1 falls	-21
l1 fault	-22
l1 feeder	-18
l1 fell	46
l1 finished	-23
l1 first	-17
l1 fit	18
l1 five	-35
l1 fla	16
l1 flashes	-71
l1 flat	-47
l1 floor	-54
l1 foot	29
l1 forward	52
l1 found	56
l1 four	-51
l1 fourteen	-42
l1 from	-36
l1 front	31
l1 full	48
l1 g	-19
l1 gap's	-19
l1 garage	67
l1 gate	-30
l1 get	151
l1 gets	61
l1 gimme	86
l1 going	41
l1 gone	-26
l1 good	-32
l1 got	126
l1 grab	59
l1 grade	-32
l1 hall	58
l1 has	103
l1 have	61
l1 he's	-105
l1 head	18
l1 headroom's	25
l1 hearth's	33
l1 height	40
l1 height's	20
l1 hinges	18
l1 hit	-28
l1 hole	-63
l1 hole's	35
l1 homeruns	16
l1 hour's	-52
l1 house	-15
l1 hub	24
l1 humidity's	28
l1 hundred	-21
l1 hung	41
l1 hwy	-22
l1 i'm	-25
l1 in	-66
l1 inch	60
l1 install	-27
l1 interpass	23
l1 invert's	36
l1 invoice	-32
l1 is	54
l1 it	81
l1 it's	-57
l1 item	-26
l1 items	-19
l1 job	-38
l1 jumper	-28
l1 just	95
l1 kept	44
l1 key	-68
l1 kid's	-27
l1 kitchen	32
l1 knock	22
l1 knocked	-23
l1 laborer	58
l1 lad's	-22
l1 ladder	-20
l1 laid	30
l1 landing	28
l1 lap	49
l1 last	27
l1 least	68
l1 leaves	78
l1 left	32
l1 level	-57
l1 like	-24
l1 limit's	32
l1 line	-85
l1 lintel	18
l1 lintel's	26
l1 long	-54
l1 longer	-19
l1 loop	-42
l1 lost	21
l1 lot	-99
l1 lp	-32
l1 lvl	-42
l1 m	-30
l1 make	17
l1 makes	-19
l1 man's	-39
l1 mark	-36
l1 maybe	105
l1 me	42
l1 meant	20
l1 measure	-35
l1 measured	22
l1 mm	-36
l1 mode	-39
l1 moisture	32
l1 morning	16
l1 my	15
l1 nd	-18
l1 necesito	38
l1 need	138
l1 needs	57
l1 net	-39
l1 neutral's	25
l1 new	-87
l1 nine	-22
l1 nobody's	-52
l1 not	58
l1 note	-51
l1 now	40
l1 nozzle	-38
l1 number	-186
l1 number's	-85
l1 ocean's	-31
l1 of	-54
l1 offered	-25
l1 oh	-47
l1 old	-80
l1 on	-21
l1 one	-31
l1 ones	61
l1 only	82
l1 or	-37
l1 order	23
l1 ordered	23
l1 other	-22
l1 ought	-19
l1 out	99
l1 overhang's	23
l1 owns	-22
l1 p	-44
l1 packers	-19
l1 paddock	-16
l1 page	-24
l1 pan's	19
l1 panel	-22
l1 panel's	18
l1 part	-31
l1 past	-23
l1 pier	-43
l1 pin	-27
l1 plant	21
l1 plate	28
l1 plot	-19
l1 plus	65
l1 po	-17
l1 port	-21
l1 poured	18
l1 pressure's	-31
l1 profile's	23
l1 psalm	-30
l1 pull	48
l1 pulled	18
l1 pulling	39
l1 pump	-19
l1 put	48
l1 quarter	76
l1 quoted	-21
l1 r	-70
l1 rack	-33
l1 ran	45
l1 rate's	-17
l1 rated	42
l1 ratio's	48
l1 read	47
l1 reading	45
l1 reads	61
l1 recirc	46
l1 red	37
l1 replace	21
l1 replaced	35
l1 returned	17
l1 reveal's	17
l1 rh	24
l1 right	-55
l1 rise	58
l1 riser	-28
l1 rm	-103
l1 rolled	-39
l1 room	-88
l1 roughly	35
l1 row	-26
l1 rtu	-18
l1 rule	-28
l1 run	35
l1 running	16
l1 sags	19
l1 saves	-20
l1 say	21
l1 says	41
l1 scaff	33
l1 sch	-49
l1 seat's	-34
l1 second	-22
l1 section	-39
l1 see	46
l1 sent	38
l1 serving	-16
l1 set	55
l1 setting	-20
l1 shave	38
l1 she's	-55
l1 sheet	-51
l1 shelf	-39
l1 short	56
l1 shower	-21
l1 shows	37
l1 side	19
l1 since	-41
l1 sister	29
l1 six	27
l1 sixteen	-20
l1 sixty	-19
l1 sleeper's	16
l1 slide	-46
l1 slip	-18
l1 slope's	31
l1 so	90
l1 solid	-28
l1 spacing	20
l1 span's	21
l1 spec	21
l1 spurs	-16
l1 square	-42
l1 stack	16
l1 stage	-34
l1 stair	-28
l1 starter	26
l1 static	58
l1 static's	29
l1 station	-20
l1 step	-38
l1 still	60
l1 stone	38
l1 strike	-44
l1 studio	-26
l1 subcool	30
l1 suction's	16
l1 suite	-35
l1 superheat's	17
l1 swap	39
l1 sweet	-18
l1 switch	-55
l1 t	19
l1 table	-20
l1 tag	-28
l1 take	36
l1 takes	-28
l1 talks	-38
l1 temp	23
l1 ten	-20
l1 th	-18
l1 than	50
l1 that	-76
l1 that's	-17
l1 the	-117
l1 them	-30
l1 then	-18
l1 there	-29
l1 thing	-47
l1 this	-24
l1 throat's	53
l1 throw	43
l1 ticket	-18
l1 til	-45
l1 till	-52
l1 title	-15
l1 to	63
l1 tomorrow	18
l1 took	66
l1 top	-22
l1 tread	-39
l1 treads	17
l1 truck	-55
l1 turn	-15
l1 turned	-30
l1 turning	-18
l1 twelve	-33
l1 two	20
l1 two's	26
l1 type	-72
l1 under	92
l1 unit	-141
l1 up	38
l1 us	48
l1 use	34
l1 used	93
l1 vanity	23
l1 vikings	-23
l1 voltage	67
l1 volts	29
l1 wall	33
l1 wall's	26
l1 want	57
l1 wanted	21
l1 wants	42
l1 was	79
l1 we're	47
l1 well	36
l1 wet	17
l1 wide	16
l1 wo	-17
l1 x	107
l1 you	-23
l1 your	-50
l1 zone	-119
l1 £	-39
l1 ×	28
l1. "	39
l1. #	28
l1. $	-91
l1. 's	98
l1. (	22
l1. +	45
l1. ,	54
l1. -	-61
l1. -ed	60
l1. -ing	24
l1. -ly	61
l1. -s	70
l1. .	20
l1. /	-85
l1. 1	-60
l1. :	68
l1. @	19
l1. Name	-96
l1. letter	-57
l1. one	-109
l1. unit	-59
l1. £	-39
l2 	-17
l2 
	21
l2 '	47
l2 (	39
l2 ,	27
l2 1	-72
l2 11	41
l2 118	-22
l2 18	-27
l2 180	33
l2 31	-20
l2 34	18
l2 4	-25
l2 400	-33
l2 555	-16
l2 6	-47
l2 60	18
l2 600	35
l2 68	61
l2 9	18
l2 95	-36
l2 a	-132
l2 acts	-32
l2 again	-44
l2 all	-25
l2 allow	60
l2 already	19
l2 amps	16
l2 an	-40
l2 and	23
l2 anything	25
l2 apartment	28
l2 apprentice	-52
l2 aquastat	31
l2 architect	28
l2 are	16
l2 asked	26
l2 at	-107
l2 away	25
l2 back	-18
l2 basement	30
l2 battery's	-44
l2 be	34
l2 bedroom	16
l2 been	-19
l2 bench	29
l2 bet	-22
l2 billed	-23
l2 black	38
l2 blacks	-37
l2 blast	23
l2 block	20
l2 blood	-40
l2 bolts	20
l2 bond's	-21
l2 boss	-28
l2 bottom	19
l2 box	22
l2 boxes	48
l2 bracket	26
l2 breaker's	38
l2 broke	69
l2 bundles	87
l2 burned	29
l2 buzz	59
l2 by	-68
l2 call	93
l2 calls	22
l2 came	18
l2 cap	26
l2 change	-70
l2 changed	24
l2 charge	-16
l2 charged	-57
l2 check	-26
l2 chimney	-29
l2 chlorine's	52
l2 choir's	-24
l2 close	33
l2 closer	33
l2 closes	-34
l2 code	65
l2 color	-20
l2 column	-38
l2 comes	27
l2 coming	-40
l2 compacted	30
l2 compaction's	21
l2 corner	27
l2 count	-21
l2 counter's	33
l2 counts	25
l2 curtain's	-22
l2 curve	17
l2 cut	52
l2 cycle	-16
l2 day	-28
l2 days	45
l2 diagonals	57
l2 dip	-32
l2 display	-68
l2 dog	-21
l2 don't	-83
l2 dos	44
l2 dowel	24
l2 down	28
l2 dropped	27
l2 dryer	-26
l2 drywall's	24
l2 eight	30
l2 eighteen	24
l2 eighth	17
l2 em	34
l2 epoxy	-31
l2 except	-16
l2 fan	-28
l2 fault	-19
l2 fifty	-28
l2 fit	40
l2 flights	-23
l2 flue	37
l2 foot	32
l2 footer	-23
l2 for	-70
l2 forty	-26
l2 forward	-47
l2 four	51
l2 fourth	-48
l2 friday	-31
l2 from	-43
l2 ft	36
l2 full	-61
l2 g	-16
l2 gallons	-18
l2 gap's	-18
l2 gas	-33
l2 gate	-25
l2 gave	70
l2 get	-35
l2 give	-31
l2 gives	-49
l2 giving	-15
l2 glass	21
l2 goin	-15
l2 going	-48
l2 good	25
l2 got	-22
l2 gotta	54
l2 grab	-18
l2 guy	50
l2 half	-40
l2 handrail	17
l2 hang	16
l2 happy	-54
l2 hardware	-58
l2 haul	-64
l2 have	26
l2 he	-50
l2 head	51
l2 header	28
l2 header's	27
l2 heads	-28
l2 held	21
l2 here	-31
l2 hes	-25
l2 high	62
l2 hinges	-30
l2 his	-17
l2 hole's	20
l2 hook's	18
l2 hot	-18
l2 hour	-28
l2 hours	-29
l2 house	-22
l2 humidity	29
l2 hundred	21
l2 i	89
l2 i'd	36
l2 in	-61
l2 inch	36
l2 innings	-18
l2 inside	36
l2 instead	47
l2 ipad's	-33
l2 it	16
l2 it'll	32
l2 it's	-23
l2 joists	22
l2 kid	-34
l2 kit	25
l2 kitchen	-36
l2 knots	37
l2 lands	-47
l2 lap	75
l2 left	49
l2 leg	56
l2 lengths	21
l2 level	-24
l2 lime	19
l2 load's	-23
l2 locked	-28
l2 loose	30
l2 low	68
l2 lp2	-20
l2 lunch	-20
l2 lvl	30
l2 m	15
l2 make	83
l2 marked	-16
l2 materials	-31
l2 maybe	-31
l2 me	-19
l2 medium	18
l2 meter	50
l2 mil	-39
l2 mile	-22
l2 missing	41
l2 mix	39
l2 mixed	20
l2 mm	29
l2 moisture's	34
l2 mon	15
l2 monday	24
l2 more	39
l2 morning	25
l2 nail	34
l2 necesito	26
l2 need	18
l2 needs	25
l2 new	29
l2 nineteen	-34
l2 no	-68
l2 not	-62
l2 number	-22
l2 of	-59
l2 of body	24
l2 of cars	-28
l2 of clock	-40
l2 of food	-37
l2 of kin	-32
l2 of money	-62
l2 of past	-18
l2 of phones	36
l2 of roads	37
l2 of school	-86
l2 of sport	-16
l2 off	-75
l2 office	-18
l2 offset	16
l2 oh	-19
l2 ok	-29
l2 old	-19
l2 on	-63
l2 one	-29
l2 ones	30
l2 only	51
l2 opening	17
l2 ot	-19
l2 out	-51
l2 outlets	24
l2 over	23
l2 owe	-28
l2 owes	-16
l2 pack	-21
l2 packs	72
l2 pad	37
l2 paint	-16
l2 parks	-23
l2 part	-20
l2 passed	-23
l2 pay	-15
l2 pcs	-66
l2 per	-21
l2 permit	-26
l2 ph	21
l2 phone's	-30
l2 pick	83
l2 picked	15
l2 pickets	86
l2 pin	-31
l2 pipe	39
l2 pipe's	16
l2 plate	-22
l2 posts	16
l2 powerball	-17
l2 pressure's	23
l2 prob	26
l2 prv's	38
l2 pumped	17
l2 purlins	22
l2 put	68
l2 puts	29
l2 qty	56
l2 quarter	-35
l2 quiet	-18
l2 r	-57
l2 race	-36
l2 rafters	24
l2 rail	27
l2 raise	56
l2 ran	-49
l2 range	24
l2 rated	-24
l2 rather	-19
l2 rcbo's	16
l2 real	27
l2 rebar's	-17
l2 red	-59
l2 return	52
l2 return's	33
l2 roof	25
l2 room	-31
l2 rough	19
l2 round	-64
l2 rows	17
l2 rtu	-54
l2 sand	-18
l2 says	26
l2 scale	-15
l2 screws	29
l2 see	-21
l2 sent	26
l2 set	91
l2 sets	-80
l2 seventy	25
l2 she	-20
l2 she'll	-57
l2 she's	-25
l2 shedding's	-29
l2 sheets	-25
l2 shelf	38
l2 shift's	-30
l2 shim	22
l2 short	50
l2 shorted	72
l2 shot	63
l2 should	58
l2 should've	35
l2 sill	38
l2 sill's	42
l2 site	-22
l2 six	-41
l2 sixteenth	-47
l2 sixty	33
l2 slump	44
l2 smokes	-26
l2 smoking	-34
l2 snake	-35
l2 so	36
l2 soft	20
l2 sometime	-31
l2 somewhere	80
l2 spaced	56
l2 spec	48
l2 sphere	46
l2 splash	17
l2 spring's	-38
l2 stairs	-29
l2 stairwell	21
l2 starting	-42
l2 static's	18
l2 sticks	48
l2 still	-31
l2 stirrups	76
l2 stock's	-30
l2 string	26
l2 stuck	25
l2 studs	32
l2 sub	-21
l2 subfloor's	18
l2 summer	-30
l2 supply's	23
l2 switch	15
l2 table	-51
l2 take	-45
l2 tape	17
l2 tempered	16
l2 ten	-68
l2 terms	-46
l2 tested	53
l2 that	52
l2 that's	-34
l2 the	-94
l2 them	26
l2 thermostat's	51
l2 they're	-47
l2 thin	21
l2 third	-38
l2 three	67
l2 through	-19
l2 throwing	-16
l2 throws	-45
l2 thursday	-20
l2 tide's	-47
l2 ties	25
l2 time	-21
l2 to	-44
l2 toast	18
l2 tomorrow	-73
l2 trap	30
l2 truck	18
l2 truck's	-19
l2 twelve	42
l2 two	-55
l2 type	-63
l2 u	-32
l2 under	-17
l2 unit	-21
l2 up	-20
l2 us	-36
l2 vanity	48
l2 wall	32
l2 wants	-24
l2 was	-74
l2 washer	36
l2 water's	31
l2 ways	-27
l2 we	59
l2 we're	-17
l2 wee	-39
l2 went	37
l2 were	18
l2 what's	-47
l2 width	26
l2 will	23
l2 window	-59
l2 windows	20
l2 wound	18
l2 years	-42
l2 you	18
l2 zero	-56
l2. #	-17
l2. '	47
l2. (	39
l2. ,	27
l2. -ed	46
l2. -ing	-19
l2. -s	47
l2. /	19
l2. 1	-16
l2. Name	-30
l2. letter	26
l2. n't	-85
l2. one	-62
l2. unit	24
l3 
	-17
l3 '	-16
l3 (	18
l3 ,	24
l3 -	-20
l3 1	-40
l3 1.5	32
l3 10	-65
l3 12	41
l3 14	15
l3 16	-26
l3 1750	38
l3 2	16
l3 2214	-23
l3 5	-18
l3 6	-20
l3 6120	-26
l3 7	-45
l3 9	-17
l3 :	-18
l3 a	17
l3 about	-24
l3 all	-40
l3 already	19
l3 also	-24
l3 amp	16
l3 amps	49
l3 an	57
l3 apart	45
l3 apiece	36
l3 as	21
l3 at	-99
l3 b	-27
l3 back	-19
l3 basement	-16
l3 bath	69
l3 batten	28
l3 bay	51
l3 be	-32
l3 beam's	-16
l3 better	19
l3 between	-58
l3 big	18
l3 birdied	-22
l3 blow	25
l3 board's	-16
l3 bolt	-38
l3 both	-16
l3 bronze	16
l3 building	24
l3 busted	-30
l3 but	-35
l3 buy	-16
l3 by	53
l3 call	-22
l3 came	74
l3 can't	19
l3 change	50
l3 changed	20
l3 channel	-44
l3 ckts	-26
l3 cleaned	35
l3 clear	38
l3 code	-28
l3 corta	44
l3 cracked	32
l3 crane's	-25
l3 cut	38
l3 deep	-20
l3 den	27
l3 digits	-42
l3 dimmers	71
l3 door	-21
l3 draft's	-15
l3 dryer	26
l3 dump	19
l3 dumpsters	33
l3 each	59
l3 eight	33
l3 eighty	-49
l3 ended	37
l3 expires	-46
l3 f	29
l3 falls	-21
l3 feeding	20
l3 fire	-16
l3 first	71
l3 flashes	-47
l3 flat	-27
l3 flew	-16
l3 foot	33
l3 footing's	16
l3 for	16
l3 form	27
l3 four	-40
l3 fourteen	38
l3 from	-27
l3 gallons	-36
l3 gate	-39
l3 generator	29
l3 get	-62
l3 goal	-30
l3 goes	16
l3 going	-41
l3 gone	20
l3 got	-18
l3 grab	31
l3 gray	-27
l3 grout's	55
l3 hank	-23
l3 he	-59
l3 he's	-36
l3 heads	25
l3 her	-24
l3 hes	-32
l3 him	-39
l3 hinges	-41
l3 his	-18
l3 hole	24
l3 hood	15
l3 hour	-25
l3 hour's	-18
l3 hours	-16
l3 hung	20
l3 i'd	24
l3 i'm	33
l3 if	60
l3 inch	30
l3 inlet's	33
l3 is	-40
l3 island	19
l3 it's	-21
l3 items	-20
l3 its	-28
l3 jack's	18
l3 jumper	-62
l3 keep	60
l3 kicks	62
l3 kids	32
l3 knock	-22
l3 kpa	40
l3 last	-26
l3 left	-28
l3 leg	57
l3 let	-34
l3 lifted	36
l3 load	-23
l3 loads	-19
l3 long	24
l3 loose	20
l3 lumber's	-42
l3 marked	-52
l3 me	28
l3 meter	16
l3 mirror's	15
l3 mix	66
l3 more	34
l3 move	30
l3 moved	-53
l3 my	-54
l3 nailed	15
l3 next	-61
l3 nine	67
l3 nobody	-46
l3 not	20
l3 nothing	34
l3 of	25
l3 off	-17
l3 office	-17
l3 oh	31
l3 ohms	27
l3 ok	-17
l3 okay	-19
l3 old	73
l3 on	20
l3 ones	-18
l3 only	-18
l3 ordered	19
l3 other	49
l3 ought	28
l3 out	-23
l3 outlets	-27
l3 owner	-17
l3 paper	-22
l3 piece	15
l3 plans	66
l3 plinth	28
l3 press	-21
l3 pumped	50
l3 put	-58
l3 quit	-34
l3 r	29
l3 rack	-41
l3 rafters	29
l3 range	-15
l3 ratio's	51
l3 register's	35
l3 relief	39
l3 rental	-23
l3 rev	36
l3 rip	29
l3 rise	33
l3 room	31
l3 row	-17
l3 run	25
l3 s	31
l3 safe	-32
l3 says	-23
l3 see	-24
l3 service	19
l3 seven	26
l3 seventy	26
l3 she	-43
l3 shelves	18
l3 should	28
l3 sign's	29
l3 since	-49
l3 single	-15
l3 six	-27
l3 slide	43
l3 smoko	-28
l3 sold	-19
l3 some	35
l3 somebody	43
l3 spacing	16
l3 stairs	24
l3 start	-34
l3 started	-56
l3 stat's	-22
l3 static	20
l3 steps	-30
l3 still	-36
l3 stub	27
l3 subcool	19
l3 superheat's	32
l3 supposed	20
l3 switch	-26
l3 tap	21
l3 tape	-18
l3 team's	-40
l3 temp	49
l3 ten	-27
l3 test	-47
l3 th	-20
l3 that's	-19
l3 the	43
l3 them	19
l3 then	23
l3 there	45
l3 they	-23
l3 they're	-17
l3 thick	48
l3 thinks	-22
l3 thirteen	48
l3 thirty	-29
l3 three	-51
l3 thurs	-20
l3 thursday	20
l3 ticket	-19
l3 tie	37
l3 tile	31
l3 times	-34
l3 tires	-32
l3 to	30
l3 tomorrow	24
l3 too	29
l3 torque	51
l3 trim	26
l3 tripped	-22
l3 truck	25
l3 tune	-82
l3 twelve	35
l3 two	-16
l3 txt	-16
l3 u	-41
l3 unit	23
l3 units	16
l3 up	-43
l3 upsize	35
l3 upstairs	21
l3 used	15
l3 valve	19
l3 van	21
l3 vent	28
l3 vikings	-19
l3 voices	-16
l3 voted	-18
l3 wall	-17
l3 ways	18
l3 we	-30
l3 well	25
l3 wet	17
l3 white	36
l3 wide	16
l3 wire's	22
l3 wood	-30
l3 x	33
l3 yard	-23
l3 you	-49
l3 zz	-27
l3. '	-16
l3. (	18
l3. ,	24
l3. -	-20
l3. -ed	-36
l3. -ing	36
l3. :	-18
l3. n't	36
l3. unit	15
letter head 0	-61
letter head none	-23
long 10	-32
long 30	37
long 6	24
long undefined	-21
more figures 5	-24
more l. word	-49
more r 	-34
more r. #	-34
more r. word	-25
more words round	-41
names 0 strange 0	34
names 0 strange 1	-63
names 0 strange 2	-122
names 1 strange 1	-46
names 1 strange 2	-26
names 2 strange 1	41
names 2 strange 2	44
names 3	26
of cars	32
of food	-16
of kin	-67
of media	-92
of money	-66
of past	-25
of phones	-56
of roads	-31
of school	-40
of services	30
of so many 0	37
of so many 1	-46
of so many 2	-47
of so many 3	-41
of sport	-18
one head none	-119
r of body	-43
r of cars	33
r of clock	-30
r of food	-39
r of kin	-85
r of money	-161
r of services	45
r of sport	-18
r1 )	-68
r1 ,	36
r1 -	-83
r1 .	27
r1 12	23
r1 2	45
r1 3	-24
r1 4	19
r1 555	-18
r1 7	-29
r1 :	-116
r1 @	18
r1 aa	21
r1 above	42
r1 across	30
r1 adds	-26
r1 advil	-21
r1 again	-46
r1 against	35
r1 alarm	-23
r1 along	15
r1 already	-56
r1 an	-64
r1 anchors	17
r1 and	-25
r1 apart	70
r1 apiece	31
r1 area	-34
r1 as	-28
r1 at	40
r1 b	-39
r1 back	40
r1 bad	26
r1 baffles	15
r1 banksia	-21
r1 base	26
r1 baths	23
r1 batts	-69
r1 bays	-26
r1 be	23
r1 bedroom	-21
r1 blade	-34
r1 blades	27
r1 blinds	36
r1 blocks	15
r1 blown	20
r1 board	32
r1 boards	62
r1 bracket	27
r1 brass	40
r1 brg	18
r1 bricks	-15
r1 broke	-16
r1 bucks	-132
r1 burner	-54
r1 business	-15
r1 but	32
r1 by	48
r1 c	-19
r1 call	15
r1 can	-29
r1 cells	30
r1 cement	-19
r1 centers	24
r1 centres	22
r1 chance	-17
r1 clear	35
r1 closed	48
r1 closets	17
r1 code	-19
r1 come	-19
r1 coming	31
r1 common	35
r1 connections	-16
r1 corner	50
r1 corridor	-19
r1 cr	25
r1 cracked	27
r1 creams	-19
r1 crew	-31
r1 crows	-34
r1 cut	17
r1 d	-17
r1 dash	-25
r1 dead	29
r1 decks	19
r1 deep	70
r1 den	32
r1 dentists	-40
r1 dimmers	25
r1 dollar	-53
r1 dollars	-22
r1 don't	33
r1 done	61
r1 door	-20
r1 doors	17
r1 double	17
r1 dutchmen	25
r1 dynamic	20
r1 elbows	18
r1 euro	-90
r1 even	28
r1 every	-16
r1 exit	27
r1 extra	61
r1 extras	52
r1 faced	-19
r1 fall	36
r1 fifty	-42
r1 fingers	-25
r1 finish	-15
r1 five	-70
r1 flat	22
r1 floor	16
r1 flowing	32
r1 forms	-15
r1 forty	-22
r1 four	-41
r1 fourteen	-19
r1 from	-19
r1 full	16
r1 gang	-77
r1 gets	-30
r1 give	44
r1 go	-59
r1 goes	-32
r1 gone	-37
r1 good	19
r1 got	-24
r1 grille	-39
r1 guys	-54
r1 had	-22
r1 hall	35
r1 hand	-31
r1 handle	-62
r1 hangers	15
r1 has	-78
r1 have	29
r1 he	-17
r1 he'll	-36
r1 head	23
r1 head's	16
r1 heads	68
r1 helpers	-35
r1 here	84
r1 high	95
r1 hinges	32
r1 hit	-24
r1 hole	-85
r1 hooks	31
r1 hot	-18
r1 house	-22
r1 hundreds	-23
r1 i	60
r1 i'll	22
r1 i'm	16
r1 i've	-16
r1 in	31
r1 instead	27
r1 iron	-26
r1 is	-114
r1 ish	-18
r1 it	-21
r1 it'll	-36
r1 juniper	-27
r1 just	67
r1 keys	-20
r1 kinds	-39
r1 ladders	15
r1 larch	-21
r1 last	-20
r1 laundromats	-22
r1 layer	-74
r1 layers	20
r1 leaks	16
r1 left	80
r1 leg	-20
r1 lift	-20
r1 like	21
r1 limiter	40
r1 living	17
r1 location	46
r1 long	70
r1 loose	21
r1 love	-32
r1 lower	18
r1 man	-21
r1 maple	-42
r1 max	53
r1 modules	21
r1 more	112
r1 nail	22
r1 need	36
r1 needs	-70
r1 net	-46
r1 new	47
r1 next	-26
r1 niches	22
r1 nine	16
r1 ninety	-58
r1 ninth	-23
r1 no	16
r1 north	-17
r1 nos	21
r1 not	31
r1 nothing	-33
r1 now	-29
r1 o'clock	-85
r1 obscure	16
r1 oc	45
r1 oclock	-27
r1 off	46
r1 out	-17
r1 outlets	31
r1 outta	20
r1 over	-29
r1 packers	-23
r1 panel	-113
r1 panhead	-29
r1 part	-59
r1 parts	55
r1 people	-15
r1 per	65
r1 piers	22
r1 plate	35
r1 plinth	19
r1 pm	-25
r1 problems	-26
r1 proud	21
r1 pulled	28
r1 put	-29
r1 quarter	-23
r1 quid	-27
r1 rattle	21
r1 reads	-35
r1 ready	-17
r1 receps	19
r1 refused	-27
r1 return's	27
r1 right	-24
r1 rod	-18
r1 roof	-25
r1 rooms	15
r1 rubber	23
r1 running	24
r1 runs	45
r1 says	-61
r1 screens	43
r1 second	-64
r1 seeds	-32
r1 seven	-18
r1 shakes	-18
r1 sharp	-38
r1 she	-15
r1 shelf	-49
r1 shift	-43
r1 shims	24
r1 shingles	-25
r1 short	32
r1 shot	-16
r1 should	80
r1 shows	-22
r1 side	-33
r1 sides	-30
r1 silicone	-31
r1 since	-31
r1 sink	52
r1 six	-44
r1 slope	17
r1 smoke	18
r1 smokes	-20
r1 so	42
r1 soft	-18
r1 something	-39
r1 space	19
r1 spaces	35
r1 spare	53
r1 speeds	-18
r1 split	-16
r1 spots	-23
r1 sprinkler	32
r1 square	-18
r1 stage	-40
r1 stakes	18
r1 stars	-45
r1 steps	-37
r1 still	63
r1 stops	-19
r1 straps	17
r1 strikes	-56
r1 studs	47
r1 sugars	-20
r1 sure	-21
r1 switch	26
r1 switches	16
r1 tall	19
r1 ten	34
r1 the	-45
r1 then	-41
r1 they	21
r1 thick	46
r1 things	-25
r1 thirty	24
r1 this	-32
r1 three	25
r1 through	-18
r1 till	-21
r1 times	-107
r1 tip	-20
r1 to	48
r1 together	-43
r1 toilet	34
r1 toilets	34
r1 tomorrow	-37
r1 tonight	24
r1 total	24
r1 toward	29
r1 towel	19
r1 treads	23
r1 tries	53
r1 tripped	-34
r1 tub	-17
r1 two	-30
r1 u	-17
r1 up	17
r1 usb	20
r1 valve	-26
r1 voices	-24
r1 wafers	20
r1 walls	30
r1 wants	-25
r1 was	-62
r1 waste	16
r1 wax	16
r1 way	-66
r1 ways	-47
r1 we're	-36
r1 wednesday	26
r1 were	26
r1 where	34
r1 white	22
r1 wide	62
r1 will	46
r1 window	-44
r1 windows	53
r1 wood	-28
r1 work	45
r1 wrongs	-38
r1 x	60
r1. 's	37
r1. )	-68
r1. ,	36
r1. -	-83
r1. -ing	39
r1. .	27
r1. 1	18
r1. :	-116
r1. @	18
r1. Name	-50
r1. letter	49
r1. one	-128
r1. word	36
r2 "	24
r2 #	-21
r2 (	-24
r2 *	-20
r2 -	19
r2 .	17
r2 10	23
r2 100	32
r2 12	64
r2 15	21
r2 17	-23
r2 18	-20
r2 2	-37
r2 20	-18
r2 21	-29
r2 24	-18
r2 250	43
r2 28	25
r2 34	-18
r2 36	16
r2 41	17
r2 430	-41
r2 450	20
r2 5	-26
r2 530	-15
r2 7	-36
r2 8	36
r2 :	-83
r2 about	-32
r2 acts	-32
r2 against	-16
r2 all	-18
r2 also	-34
r2 an	-22
r2 and	20
r2 are	57
r2 arms	-19
r2 around	-20
r2 ask	41
r2 at	-33
r2 b	-25
r2 back	-28
r2 ballasts	22
r2 bath	-23
r2 be	58
r2 bedroom	-23
r2 behind	16
r2 bent	30
r2 better	21
r2 board	39
r2 bought	32
r2 box	-82
r2 boxes	19
r2 brackets	-19
r2 bust	-22
r2 but	28
r2 buy	23
r2 buzz	25
r2 c	-39
r2 cant	-23
r2 carry	-16
r2 caulk	34
r2 center	55
r2 change	-54
r2 changed	17
r2 circus	-29
r2 clear	40
r2 client	-28
r2 close	33
r2 code	59
r2 concrete	-21
r2 cr	-22
r2 crack	-25
r2 cracked	99
r2 crown	-33
r2 day	-34
r2 days	-26
r2 deny	-18
r2 didn't	-18
r2 dirt	16
r2 do	82
r2 don't	-19
r2 done	-26
r2 door	-17
r2 doors	-16
r2 down	-112
r2 drawing	19
r2 each	88
r2 easter	-29
r2 eight	-22
r2 eighteen	-21
r2 eighty	-46
r2 elbow	-16
r2 eleven	-19
r2 em	69
r2 epoxy	-39
r2 every	48
r2 everybody	-19
r2 everywhere	-32
r2 extra	-18
r2 faces	-30
r2 fan	-36
r2 far	53
r2 fill	27
r2 filter	24
r2 fine	32
r2 five	-56
r2 floor	-30
r2 fogged	18
r2 foot	15
r2 footers	30
r2 for	43
r2 forward	-37
r2 four	-57
r2 fourteen	64
r2 framed	-36
r2 friday	-15
r2 fridays	-24
r2 from	-28
r2 front	58
r2 furnace	-44
r2 gang	-24
r2 get	-22
r2 glue	-31
r2 go	62
r2 good	15
r2 got	33
r2 grade	21
r2 ground	-20
r2 hair	33
r2 hang	56
r2 hauf	-17
r2 he	-44
r2 he's	-29
r2 head	34
r2 heads	27
r2 hinges	-48
r2 his	17
r2 hole	-25
r2 hot	58
r2 hour	-31
r2 house	23
r2 hr	-38
r2 hung	23
r2 i'm	-18
r2 if	-21
r2 inch	43
r2 inside	20
r2 it	20
r2 latch	17
r2 later	20
r2 laundry	-18
r2 lift	-18
r2 litre	26
r2 lol	-25
r2 look	-19
r2 lost	45
r2 louvres	18
r2 medium	-51
r2 midspan	19
r2 mirror	-19
r2 missing	32
r2 morning	-23
r2 never	-22
r2 night	-52
r2 nine	-15
r2 nineteen	-45
r2 ninety	20
r2 no	-18
r2 nobody's	-29
r2 noon	-43
r2 not	23
r2 nuts	21
r2 of	-33
r2 oh	-26
r2 ok	21
r2 one	-23
r2 ones	32
r2 open	35
r2 opens	-22
r2 or	22
r2 order	-21
r2 ounce	25
r2 over	43
r2 pad	-17
r2 paint	17
r2 panel	22
r2 past	-27
r2 patch	24
r2 pattern	-34
r2 plaster	18
r2 play	-32
r2 plus	17
r2 point	-37
r2 pop	-19
r2 pops	17
r2 pound	16
r2 primer	40
r2 quarter	46
r2 rail	-21
r2 range	-52
r2 rest	48
r2 ring	38
r2 road	30
r2 rolls	23
r2 row	21
r2 rub	40
r2 run	-15
r2 s	-15
r2 saturday	-33
r2 set	-29
r2 she	29
r2 she's	19
r2 shelf	22
r2 shimmed	36
r2 short	35
r2 should	-18
r2 shower	-31
r2 shut	-16
r2 side	36
r2 siding	35
r2 sign	21
r2 signed	-46
r2 single	36
r2 site	54
r2 six	-42
r2 slow	-18
r2 spraying	25
r2 spring	-18
r2 st	-24
r2 start	-23
r2 started	-34
r2 starting	-23
r2 sticks	-21
r2 still	-52
r2 stool	-37
r2 stop	23
r2 sunday	-39
r2 supposed	15
r2 swap	30
r2 switches	-18
r2 ten	39
r2 the	55
r2 there's	-27
r2 these	45
r2 they	-18
r2 they've	16
r2 thing	-61
r2 thirty	25
r2 this	41
r2 those	-26
r2 thousand	-29
r2 three	-49
r2 thursday	-28
r2 tighter	33
r2 time	-31
r2 times	17
r2 today	31
r2 treinta	37
r2 trips	-21
r2 tuesday	-18
r2 twelve	26
r2 twenty	30
r2 two	-32
r2 us	-69
r2 used	20
r2 want	30
r2 wants	-22
r2 way	-16
r2 ways	26
r2 week	30
r2 weekend	29
r2 were	28
r2 what	51
r2 windows	-18
r2 with	-17
r2 won't	16
r2 works	-39
r2 worth	16
r2 x	34
r2 you're	29
r2. "	24
r2. (	-24
r2. *	-20
r2. -	19
r2. -ing	38
r2. -s	-15
r2. .	17
r2. :	-83
r2. Name	-75
r2. letter	20
r2. n't	-24
r2. one	-69
r2. unit	61
r3 "	-17
r3 %	33
r3 '	-34
r3 12	17
r3 14	-34
r3 28	-31
r3 3	25
r3 5	36
r3 6	-32
r3 7	46
r3 8	38
r3 90	17
r3 :	-57
r3 ;	-31
r3 a	-66
r3 act	-31
r3 after	-25
r3 again	-32
r3 air	26
r3 an	-29
r3 anodes	30
r3 are	25
r3 ask	-16
r3 at	16
r3 bag	-24
r3 bar	17
r3 base	-18
r3 bath	35
r3 bay	25
r3 bears	-20
r3 behind	29
r3 black	51
r3 blinds	-18
r3 blue	-28
r3 board	-57
r3 boards	44
r3 books	-29
r3 bottom	87
r3 box	40
r3 braille	29
r3 break	-37
r3 broken	26
r3 bronze	21
r3 brought	34
r3 bucket	22
r3 buzzer	-21
r3 by	30
r3 cabinet	-18
r3 can	53
r3 cant	-33
r3 carton	27
r3 case	20
r3 cash	-23
r3 cb	-25
r3 centre	19
r3 change	-17
r3 changed	-30
r3 chimney	19
r3 chipped	48
r3 clips	23
r3 clock	-29
r3 close	-39
r3 closet	47
r3 color	-52
r3 corner	32
r3 count	49
r3 counter	-15
r3 cover	30
r3 cracked	-37
r3 crew	-72
r3 crown	-30
r3 damaged	21
r3 dash	29
r3 de	26
r3 dead	25
r3 degree	22
r3 den	-16
r3 discharge	-31
r3 do	-17
r3 dock	-18
r3 done	-26
r3 door	63
r3 dot	-45
r3 down	17
r3 drawer	-21
r3 driving	-30
r3 dryer	21
r3 dump	48
r3 dumpster	-22
r3 each	-31
r3 edge	46
r3 eggshell	17
r3 either	-23
r3 eleven	-26
r3 ends	49
r3 enough	26
r3 every	-22
r3 falls	-26
r3 far	22
r3 fault	-21
r3 feet	17
r3 field	52
r3 fifteen	20
r3 fifty	16
r3 fine	15
r3 finish	22
r3 fit	32
r3 fixed	-25
r3 flapper	-36
r3 flashing	48
r3 flat	20
r3 flow's	18
r3 for	-42
r3 front	17
r3 furnace	-21
r3 gang	42
r3 garage	-24
r3 gauge	20
r3 glass	18
r3 good	-31
r3 got	46
r3 grab	-24
r3 grate	-21
r3 grille	-55
r3 grout	30
r3 guys	-34
r3 hangers	25
r3 has	26
r3 haul	-47
r3 have	18
r3 he	-29
r3 he's	-64
r3 head	-36
r3 heater	39
r3 held	50
r3 her	28
r3 high	26
r3 hinge	25
r3 hinges	-33
r3 hot	-15
r3 hour	27
r3 hours	-23
r3 how	-47
r3 i	-28
r3 i'll	-22
r3 idlers	51
r3 if	-24
r3 in	-30
r3 inch	-36
r3 is	-25
r3 it	47
r3 it's	30
r3 just	-18
r3 kept	-21
r3 kitchen	33
r3 knocked	-25
r3 landing	40
r3 laser	45
r3 late	-23
r3 latest	-21
r3 leave	30
r3 leg	66
r3 length	47
r3 level	17
r3 lift	-41
r3 like	-64
r3 lock	18
r3 long	36
r3 lost	-16
r3 lot	-27
r3 low	21
r3 manifold	19
r3 manual	-32
r3 mate	-22
r3 middle	52
r3 min	-21
r3 minute	-38
r3 minutes	-35
r3 missing	-40
r3 molding	-34
r3 monday	-38
r3 month	28
r3 mosaic	19
r3 moved	-18
r3 nail	-31
r3 need	27
r3 neutral	18
r3 never	-20
r3 new	-56
r3 nine	21
r3 nineteen	22
r3 nose	45
r3 number	16
r3 off	-33
r3 oh	40
r3 old	-26
r3 on	-20
r3 open	-17
r3 opener	-26
r3 order	18
r3 other	36
r3 ought	24
r3 out	67
r3 packers	-29
r3 painted	32
r3 panel	18
r3 parts	25
r3 plan	48
r3 platform	-19
r3 plenty	19
r3 plumbers	-22
r3 podium	-51
r3 point	28
r3 pool	-48
r3 porch	36
r3 put	16
r3 quarter	22
r3 radio	-48
r3 raining	-41
r3 ran	46
r3 range	-20
r3 reducers	24
r3 required	-22
r3 reset	-46
r3 right	-34
r3 room	-16
r3 row	-25
r3 run	37
r3 runs	-17
r3 safe	38
r3 safety	-46
r3 saints	-39
r3 sand	23
r3 service	-20
r3 serving	-16
r3 set	26
r3 seven	-26
r3 seventy	29
r3 sheet	24
r3 shelf	18
r3 short	43
r3 shot	-34
r3 sill	25
r3 six	21
r3 sixteen	33
r3 sixty	24
r3 slope	16
r3 so	-20
r3 soft	15
r3 some	21
r3 spare	-15
r3 spring	-19
r3 stay	-25
r3 steep	45
r3 steps	25
r3 still	-38
r3 straps	-18
r3 stripped	25
r3 sunday	-16
r3 take	40
r3 tape	54
r3 ten	-42
r3 than	-18
r3 then	19
r3 thermostat	-44
r3 they	-19
r3 this	-19
r3 three	16
r3 through	-36
r3 tile's	31
r3 today	-25
r3 together	-32
r3 tomorrow	21
r3 too	15
r3 tread	-40
r3 truck	-18
r3 tub	22
r3 tubes	33
r3 tubs	26
r3 twelve	-26
r3 twenty	39
r3 two	-56
r3 type	63
r3 uncles	-20
r3 under	-20
r3 underside	22
r3 up	-37
r3 use	33
r3 van	21
r3 vent	-17
r3 waste	25
r3 way	56
r3 we	38
r3 we're	23
r3 week	-22
r3 were	24
r3 what	-20
r3 where	16
r3 white	-23
r3 wire's	26
r3 x	27
r3 y	37
r3 year	-23
r3. "	-17
r3. %	33
r3. '	-34
r3. -ed	38
r3. -ing	-34
r3. -ly	-33
r3. 1	22
r3. :	-57
r3. ;	-31
r3. n't	-28
r3. unit	35
rule 	-47
rule eachOf	82
rule pair	181
rule quantity/decimal	37
rule quantity/mixed	50
rule quantity/whole+taken-back	30
rule range	23
size 1	-37
size 20	17
size 60	22
size 9999	-41
size more	-61
strange 0	18
strange 1	-37
strange 2	-21
strange 3	-45
strange 4	-25
talk -1	-36
talk -2.5	-84
talk -5	-102
talk -9	-93
talk 0	-39
talk 1	-39
talk 14	60
talk 20	46
talk 9	78
talk each -1	-70
talk each -2.5	-117
talk each -5	-70
talk each 0	-45
talk each 1	-53
talk each 14	39
talk each 20	77
talk each 9	31
talk each less	-48
unit head 0	-55
unit head 1	-24
unit head none	-26
units 0	-50
units 1	58
units 2	29
word head 2	21
word head 3	52
£ head none	-39
`;
