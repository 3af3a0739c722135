/** Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring. */
export const COUNTING = `
# head 0	17
# head 1	36
$ head none	-92
's head 0	-41
's head none	120
( head none	22
+ head none	23
, head 0	23
, head none	33
- head 0	-27
- head 1	22
- head none	-56
-ed head none	52
-ing head 0	15
-ly head none	64
-s head 0	56
-s head 1	16
-s head 2	-18
-s head none	41
/ head none	-96
0 l 	-18
0 l. #	-18
0 l. word	16
0 r 	-20
0 r to	-20
0 r. #	-20
0 r. word	-17
1 figures 1	47
1 head none	-76
1 l 	16
1 l ,	61
1 l .	27
1 l and	86
1 l another	-83
1 l at	27
1 l bath	-36
1 l big	-27
1 l bottom	-35
1 l bought	58
1 l bring	35
1 l broke	25
1 l buy	56
1 l by	46
1 l crowned	30
1 l cut	-40
1 l each	-39
1 l every	-96
1 l falls	-18
1 l for	-18
1 l found	26
1 l get	93
1 l good	-18
1 l got	66
1 l grab	33
1 l had	36
1 l hall	45
1 l her	38
1 l hit	-25
1 l in	17
1 l inch	61
1 l is	-37
1 l just	82
1 l last	-68
1 l left	-27
1 l leg	-30
1 l long	-16
1 l lost	49
1 l me	34
1 l mm	-37
1 l nd	-22
1 l need	41
1 l new	-82
1 l no	-22
1 l not	-23
1 l old	-72
1 l on	-20
1 l one	-30
1 l order	27
1 l other	-101
1 l outlets	17
1 l plus	50
1 l put	80
1 l reading	23
1 l red	39
1 l right	-31
1 l second	-27
1 l shave	40
1 l short	51
1 l side	27
1 l so	20
1 l square	-29
1 l take	-21
1 l th	-17
1 l that	-91
1 l that's	-21
1 l the	-144
1 l there's	41
1 l this	-31
1 l type	-28
1 l up	24
1 l want	57
1 l was	31
1 l. #	16
1 l. ,	61
1 l. -ing	-31
1 l. -s	-34
1 l. .	27
1 l. one	-28
1 l. word	-37
1 parts	88
1 r 	33
1 r -	-16
1 r .	-46
1 r 3	21
1 r at	-63
1 r belt	-15
1 r bracket	25
1 r by	21
1 r cracked	21
1 r door	18
1 r eight	17
1 r end	-50
1 r exit	22
1 r for	38
1 r hand	-31
1 r has	-28
1 r head	20
1 r here	58
1 r hit	-22
1 r it's	-18
1 r leg	-33
1 r location	45
1 r missing	16
1 r new	43
1 r nine	17
1 r of	-234
1 r off	41
1 r out	-21
1 r panel	-58
1 r reads	-30
1 r reducer	17
1 r ring	32
1 r shelf	-58
1 r shot	-18
1 r side	-25
1 r sink	50
1 r so	-25
1 r spare	29
1 r sprinkler	34
1 r switch	17
1 r three	17
1 r to	-65
1 r two	18
1 r was	-23
1 r wednesday	26
1 r. #	33
1 r. 's	-15
1 r. -	-16
1 r. -ed	-23
1 r. -ing	28
1 r. -s	-67
1 r. .	-46
1 r. 1	70
1 r. one	47
1 r. word	-42
1 words	-73
12 figures 1	-24
12 l 	46
12 l 
	-31
12 l :	38
12 l a	17
12 l about	19
12 l all	50
12 l and	23
12 l another	34
12 l apartment	-23
12 l are	24
12 l around	-31
12 l at	-109
12 l back	-28
12 l backfill	58
12 l bay	-21
12 l been	34
12 l before	-32
12 l between	-19
12 l bottom's	19
12 l bout	33
12 l box	-16
12 l breaker	-32
12 l brought	37
12 l building	-26
12 l but	49
12 l by	30
12 l can	28
12 l case	24
12 l cat	-22
12 l channel	-19
12 l circuit	-77
12 l code's	-20
12 l correction	18
12 l count	21
12 l cut	33
12 l door	-23
12 l double	-22
12 l drops	18
12 l e	-19
12 l edge	19
12 l embed	43
12 l end's	-29
12 l every	47
12 l exit	-23
12 l expires	-48
12 l exposure's	58
12 l fault	-22
12 l fell	46
12 l fit	19
12 l flat	-22
12 l floor	-52
12 l for	19
12 l four	-27
12 l from	-15
12 l front	-42
12 l garage	56
12 l get	25
12 l gone	-26
12 l got	82
12 l grab	22
12 l had	-33
12 l has	23
12 l have	17
12 l hit	-16
12 l hole	-68
12 l house	-51
12 l hung	41
12 l hwy	-20
12 l is	31
12 l it	65
12 l it's	-85
12 l items	-17
12 l its	-16
12 l key	-39
12 l lap	47
12 l last	20
12 l least	55
12 l leaves	44
12 l left	52
12 l like	-27
12 l line	-35
12 l lost	-24
12 l lot	-47
12 l meant	19
12 l need	71
12 l needs	31
12 l not	45
12 l note	-32
12 l number	-88
12 l number's	-27
12 l ocean's	-29
12 l of	23
12 l offered	-26
12 l on	-28
12 l ought	-25
12 l out	22
12 l over	-26
12 l overhang's	23
12 l owns	-20
12 l past	-60
12 l port	-19
12 l poured	16
12 l pulling	19
12 l quarter	17
12 l ran	54
12 l reading	-57
12 l replaced	24
12 l reveal's	19
12 l right	-22
12 l riser	-44
12 l rm	-21
12 l run	41
12 l said	-45
12 l saves	-20
12 l says	26
12 l sent	17
12 l set	-48
12 l sheet	-26
12 l shows	15
12 l so	26
12 l solid	-30
12 l stack	22
12 l step	-16
12 l take	32
12 l takes	31
12 l than	28
12 l the	31
12 l then	-18
12 l there's	27
12 l throat's	57
12 l through	-21
12 l til	-43
12 l took	16
12 l tread	-21
12 l treads	18
12 l truck	-36
12 l under	-20
12 l unit	-84
12 l up	56
12 l us	46
12 l used	16
12 l wants	-25
12 l we're	53
12 l x	41
12 l zone	-29
12 l ×	24
12 l. #	46
12 l. 's	28
12 l. -ed	76
12 l. -ing	-31
12 l. -s	33
12 l. /	-31
12 l. :	38
12 l. Name	-38
12 l. one	-57
12 l. unit	-16
12 l. word	-27
12 r )	-24
12 r ,	26
12 r .	33
12 r :	-37
12 r a	26
12 r adds	-19
12 r and	-29
12 r as	-27
12 r at	22
12 r b	-37
12 r baby	15
12 r blown	22
12 r boards	16
12 r by	63
12 r cells	31
12 r closed	52
12 r coming	31
12 r creams	-20
12 r crows	-33
12 r dash	-22
12 r dead	33
12 r deep	43
12 r den	33
12 r dentists	-43
12 r do	16
12 r done	41
12 r door	-34
12 r doors	48
12 r down	26
12 r drops	27
12 r eight	-19
12 r end	18
12 r fifty	-17
12 r fire	-16
12 r five	-42
12 r for	48
12 r got	-35
12 r grille	-33
12 r has	-21
12 r heads	26
12 r here	33
12 r high	36
12 r hole	-41
12 r homeruns	26
12 r i	22
12 r instead	25
12 r iron	-28
12 r is	-33
12 r it	-19
12 r last	-27
12 r laundromats	-20
12 r left	49
12 r legs	-33
12 r like	35
12 r long	21
12 r love	-30
12 r maple	-27
12 r more	47
12 r needs	-50
12 r no	-25
12 r o'clock	-38
12 r of	54
12 r off	28
12 r on	43
12 r out	-84
12 r panel	-37
12 r rattle	23
12 r roof	-26
12 r running	22
12 r seeds	-32
12 r sharp	-29
12 r shift	-42
12 r short	66
12 r should	22
12 r shows	-20
12 r six	-33
12 r so	15
12 r something	-38
12 r studs	23
12 r the	23
12 r this	-23
12 r through	-17
12 r till	-22
12 r times	-18
12 r to	24
12 r tomorrow	-24
12 r toward	28
12 r two	-21
12 r valve	-19
12 r was	-25
12 r waste	17
12 r we	-15
12 r when	-19
12 r wide	21
12 r work	43
12 r x	16
12 r. 's	18
12 r. )	-24
12 r. ,	26
12 r. -ed	26
12 r. -ing	18
12 r. -s	16
12 r. .	33
12 r. :	-37
12 r. Name	-26
12 r. one	-104
12 r. unit	40
12 r. word	18
12 words	21
12 words round	-23
2 figures 1	-16
2 l 	34
2 l 
	-26
2 l (	22
2 l +	18
2 l -	-34
2 l adds	33
2 l another	23
2 l around	-27
2 l at	-81
2 l back	20
2 l bath	-48
2 l bay	-56
2 l beam	35
2 l bed	-25
2 l bedroom	-62
2 l bought	20
2 l brass	16
2 l bring	56
2 l building	-16
2 l buy	30
2 l charging	-22
2 l count	-38
2 l cover's	35
2 l day	-58
2 l dirt	21
2 l drawer	-41
2 l eyes	-36
2 l flashes	-29
2 l flat	-37
2 l forward	53
2 l fourteen	-23
2 l gets	46
2 l grade's	23
2 l hall	29
2 l has	19
2 l have	24
2 l in	-26
2 l it	20
2 l jumper	-29
2 l just	17
2 l kept	29
2 l landing	26
2 l last	69
2 l leg	-39
2 l low	18
2 l makes	-20
2 l maybe	64
2 l minus	28
2 l need	27
2 l number	-55
2 l of	-59
2 l one	20
2 l only	-23
2 l order	20
2 l other	18
2 l out	-17
2 l paddock	-19
2 l panel	-54
2 l past	-25
2 l plan	-28
2 l rack	-25
2 l ran	31
2 l replace	16
2 l sags	23
2 l see	35
2 l six	23
2 l slope's	31
2 l so	26
2 l strike	-23
2 l swap	29
2 l takes	-49
2 l the	58
2 l then	-29
2 l there's	-66
2 l thing	-49
2 l took	24
2 l type	-25
2 l us	-22
2 l use	18
2 l want	17
2 l wants	46
2 l was	36
2 l with	25
2 l zone	-21
2 l. #	34
2 l. 's	35
2 l. (	22
2 l. +	18
2 l. -	-34
2 l. -ed	21
2 l. /	-26
2 l. one	16
2 l. unit	-53
2 parts	29
2 r 	-21
2 r ,	-23
2 r -	-20
2 r 3	-17
2 r :	-34
2 r a	-20
2 r advil	-18
2 r after	-45
2 r against	21
2 r at	64
2 r bad	19
2 r blinds	30
2 r by	-23
2 r came	19
2 r can	-22
2 r cement	-20
2 r connections	-15
2 r don't	31
2 r doors	50
2 r extras	50
2 r faced	-17
2 r fall	36
2 r fifty	19
2 r five	24
2 r forty	20
2 r gang	-76
2 r guys	-21
2 r had	-18
2 r hall	22
2 r helpers	-31
2 r high	23
2 r homeruns	-33
2 r i	30
2 r if	29
2 r in	27
2 r is	-29
2 r kinds	-28
2 r last	36
2 r left	38
2 r lights	-30
2 r man	-20
2 r more	46
2 r new	23
2 r niches	21
2 r o'clock	-21
2 r of	88
2 r one	-37
2 r or	42
2 r out	49
2 r panel	-50
2 r part	-56
2 r proud	24
2 r pulled	28
2 r put	-18
2 r rafters	16
2 r shakes	-22
2 r sides	-28
2 r slope	19
2 r speeds	-18
2 r spots	-24
2 r stage	-34
2 r stars	-23
2 r steps	-38
2 r strikes	-20
2 r studs	21
2 r sugars	-19
2 r the	-28
2 r then	-31
2 r there	24
2 r three	-17
2 r times	-17
2 r to	68
2 r together	-28
2 r under	16
2 r usb	19
2 r were	43
2 r where	20
2 r window	-38
2 r windows	37
2 r wrongs	-40
2 r x	-26
2 r. #	-21
2 r. ,	-23
2 r. -	-20
2 r. :	-34
2 r. n't	22
2 r. one	70
2 r. word	22
20 figures 2	29
20 l ,	25
20 l .	-32
20 l 3	-21
20 l a	67
20 l and	24
20 l at	39
20 l be	34
20 l bogeyed	-19
20 l by	30
20 l ch	-22
20 l code	-29
20 l cr	-19
20 l delta's	45
20 l drew	-29
20 l error	-25
20 l every	34
20 l flat	46
20 l for	-37
20 l front	57
20 l gap's	-27
20 l go	28
20 l got	32
20 l head	17
20 l hearth's	32
20 l house	-34
20 l in	-36
20 l is	41
20 l it	20
20 l item	-15
20 l lad's	-23
20 l like	-17
20 l maybe	16
20 l me	-25
20 l on	-15
20 l packers	-22
20 l pier	-41
20 l plan	38
20 l pulling	16
20 l r	-76
20 l read	16
20 l reading	21
20 l said	24
20 l says	19
20 l seat's	-32
20 l set	40
20 l sheet	-16
20 l so	17
20 l span's	18
20 l sweet	-19
20 l tag	-28
20 l that's	-21
20 l the	-19
20 l then	58
20 l to	-46
20 l turned	-19
20 l two	16
20 l under	34
20 l used	26
20 l wants	-25
20 l was	-23
20 l your	-40
20 l. ,	25
20 l. -ing	44
20 l. .	-32
20 l. 1	-21
20 l. letter	-68
20 l. unit	50
20 l. word	20
20 parts	22
20 r 	20
20 r .	34
20 r after	53
20 r at	19
20 r banksia	-21
20 r bucks	-47
20 r by	33
20 r c	-32
20 r centers	17
20 r down	-84
20 r even	19
20 r five	-43
20 r going	-33
20 r i	20
20 r ninety	-55
20 r ninth	-24
20 r oc	19
20 r of	26
20 r off	-43
20 r on	32
20 r one	60
20 r out	32
20 r outta	22
20 r second	-23
20 r since	-28
20 r smokes	-16
20 r so	30
20 r then	-31
20 r times	-17
20 r toilets	31
20 r total	18
20 r twelve	-18
20 r twenty	-15
20 r two	-29
20 r wafers	20
20 r. #	20
20 r. -s	43
20 r. .	34
20 r. letter	23
20 r. one	-111
20 r. word	32
20 words round	-18
5 l 	36
5 l 
	-42
5 l ,	51
5 l :	20
5 l a	-31
5 l about	-36
5 l add	23
5 l after	-42
5 l all	16
5 l and	-29
5 l another	24
5 l apt	-31
5 l at	-54
5 l b	-22
5 l back	25
5 l bay	-30
5 l be	38
5 l bed	-28
5 l bldg	-37
5 l bring	26
5 l brought	44
5 l by	-48
5 l class	-25
5 l code	-41
5 l cover's	17
5 l cut	15
5 l day	-39
5 l den	16
5 l dock	-17
5 l done	18
5 l door	-34
5 l down	41
5 l elevator	-21
5 l exterior	-16
5 l feeder	-19
5 l finished	-23
5 l five	-16
5 l flashes	-48
5 l flat	-33
5 l for	61
5 l found	16
5 l front	22
5 l full	26
5 l get	52
5 l gimme	87
5 l has	36
5 l have	23
5 l he's	-16
5 l hole's	28
5 l hour's	-50
5 l house	-17
5 l is	33
5 l island	18
5 l it	68
5 l kept	19
5 l kitchen	28
5 l knock	24
5 l ladder	-18
5 l leaves	37
5 l left	35
5 l level	-41
5 l line	-22
5 l loop	-35
5 l lp	-33
5 l lvl	-40
5 l man's	-38
5 l me	33
5 l mode	-36
5 l need	22
5 l no	-22
5 l not	43
5 l note	-20
5 l number	-45
5 l of	-32
5 l on	37
5 l only	68
5 l other	63
5 l out	47
5 l over	94
5 l p	-37
5 l pan's	18
5 l part	-30
5 l pull	16
5 l pulled	24
5 l pump	-19
5 l ratio's	50
5 l rolled	-34
5 l room	-46
5 l said	33
5 l says	20
5 l seat	-17
5 l setting	-24
5 l shelf	-36
5 l short	48
5 l shot	-21
5 l sister	31
5 l slide	-44
5 l still	48
5 l strike	-20
5 l switch	-38
5 l that	21
5 l the	-47
5 l then	-18
5 l throw	21
5 l till	-22
5 l took	19
5 l type	-22
5 l under	16
5 l unit	-37
5 l up	19
5 l us	41
5 l use	20
5 l used	24
5 l ver	-16
5 l wall	16
5 l wants	33
5 l was	32
5 l x	15
5 l zone	-62
5 l. #	31
5 l. ,	51
5 l. -ed	16
5 l. -s	84
5 l. /	-52
5 l. :	20
5 l. Name	-46
5 l. letter	-30
5 l. one	-71
5 l. unit	-76
5 r )	-44
5 r -	-26
5 r 2	27
5 r 3	-35
5 r 7	-30
5 r :	-26
5 r against	17
5 r and	15
5 r apart	68
5 r apiece	28
5 r at	40
5 r back	34
5 r baths	22
5 r batts	-61
5 r bays	-32
5 r be	22
5 r blade	-54
5 r bricks	-16
5 r broken	20
5 r burner	-57
5 r business	-15
5 r but	31
5 r by	-49
5 r calls	-17
5 r came	-19
5 r closets	18
5 r corner	19
5 r corridor	-19
5 r crew	-18
5 r d	-17
5 r dimmers	26
5 r doors	-55
5 r extra	53
5 r for	33
5 r four	-46
5 r gaskets	16
5 r gets	-17
5 r guys	-24
5 r had	-15
5 r hall	16
5 r heads	25
5 r high	20
5 r hole	-22
5 r hooks	31
5 r in	54
5 r is	-59
5 r just	49
5 r layers	21
5 r leaks	16
5 r left	48
5 r lift	-29
5 r loose	20
5 r max	17
5 r more	49
5 r nail	16
5 r number	22
5 r o'clock	-45
5 r of	99
5 r off	24
5 r on	-25
5 r parts	51
5 r per	56
5 r receps	18
5 r ring	-26
5 r says	-17
5 r screens	44
5 r shingles	-25
5 r should	24
5 r spaces	31
5 r square	-49
5 r stars	-21
5 r still	62
5 r strikes	-34
5 r ten	26
5 r the	-80
5 r then	-30
5 r they	32
5 r thick	18
5 r things	-18
5 r tile	18
5 r times	-62
5 r today	-32
5 r tomorrow	-38
5 r tries	51
5 r tripped	-21
5 r under	-21
5 r walls	19
5 r way	-56
5 r went	22
5 r will	48
5 r with	-18
5 r x	30
5 r. )	-44
5 r. -	-26
5 r. -s	37
5 r. 1	-16
5 r. :	-26
5 r. n't	-22
5 r. one	-39
5 r. word	18
60 l $	-33
60 l ,	-15
60 l -	-60
60 l a	28
60 l about	-29
60 l around	58
60 l at	69
60 l be	18
60 l bin	-33
60 l breaker	-26
60 l bus	-26
60 l cold's	39
60 l cover	18
60 l do	-19
60 l door	25
60 l error	-22
60 l every	56
60 l for	15
60 l gate	-20
60 l had	-41
60 l he's	-84
60 l height's	19
60 l house	73
60 l in	-25
60 l is	66
60 l it	-32
60 l left	-28
60 l limit's	-29
60 l lot	-28
60 l me	16
60 l measure	-34
60 l meter's	17
60 l net	-35
60 l not	33
60 l number	-59
60 l of	20
60 l off	-18
60 l on	-22
60 l ones	40
60 l out	28
60 l plate	26
60 l po	-15
60 l r	-20
60 l rated	15
60 l reading	23
60 l rule	-20
60 l say	23
60 l says	26
60 l sch	-47
60 l sent	16
60 l set	52
60 l sixty	-18
60 l slip	-18
60 l so	15
60 l studio	-24
60 l talks	-39
60 l through	32
60 l to	27
60 l top	-25
60 l turned	-19
60 l up	-47
60 l vikings	-19
60 l x	25
60 l. $	-33
60 l. 's	36
60 l. ,	-15
60 l. -	-60
60 l. -ing	30
60 l. one	-24
60 l. unit	47
60 l. word	34
60 r .	34
60 r :	-24
60 r a	28
60 r across	22
60 r all	29
60 r an	-42
60 r at	42
60 r batts	-25
60 r blades	27
60 r boards	16
60 r both	25
60 r bucks	-41
60 r by	16
60 r dollars	-19
60 r down	66
60 r drops	-15
60 r fifty	-43
60 r flat	17
60 r flowing	16
60 r for	-30
60 r forty	-31
60 r front	41
60 r going	-60
60 r high	28
60 r if	-15
60 r in	-17
60 r is	-47
60 r just	16
60 r modules	23
60 r needs	-17
60 r no	-20
60 r not	34
60 r now	-25
60 r oc	22
60 r of	33
60 r off	-22
60 r on	-71
60 r or	-26
60 r packers	-19
60 r right	-21
60 r says	-16
60 r second	-40
60 r seven	-17
60 r should	31
60 r so	32
60 r space	22
60 r square	37
60 r that	15
60 r then	30
60 r there	-29
60 r thick	19
60 r voices	-29
60 r wide	25
60 r x	24
60 r. 's	16
60 r. -s	-25
60 r. .	34
60 r. /	22
60 r. :	-24
60 r. letter	31
60 r. one	-109
60 r. unit	20
60 r. word	50
60 words	21
99 figures 2	32
99 l 	-17
99 l $	-33
99 l -	22
99 l a	-16
99 l about	25
99 l an	-52
99 l at	49
99 l by	20
99 l for	-56
99 l got	-22
99 l headroom's	26
99 l height	36
99 l him	21
99 l humidity's	32
99 l in	-18
99 l it	-16
99 l job	-30
99 l of	-35
99 l only	17
99 l over	-31
99 l past	49
99 l psalm	-20
99 l roughly	36
99 l says	-36
99 l she's	-46
99 l sixteen	-17
99 l sleeper's	16
99 l temp	17
99 l that	-36
99 l to	33
99 l under	46
99 l was	26
99 l with	-18
99 l. #	-17
99 l. $	-33
99 l. 's	21
99 l. -	22
99 l. -ing	24
99 l. -ly	47
99 l. -s	-23
99 l. one	-53
99 l. unit	-30
99 l. word	26
99 parts	-33
99 r ,	43
99 r -	22
99 r a	-27
99 r an	-17
99 r and	-30
99 r bucks	-30
99 r by	17
99 r code	-15
99 r is	-20
99 r lower	18
99 r next	-31
99 r or	15
99 r out	40
99 r panhead	-27
99 r problems	-23
99 r rough	21
99 r so	34
99 r the	-15
99 r to	-22
99 r we're	-41
99 r. ,	43
99 r. -	22
99 r. -s	-40
99 r. unit	-16
999 0figures 4	-50
999 figures 3	18
999 l 	-17
999 l $	-23
999 l ,	-16
999 l a	-27
999 l about	49
999 l above	16
999 l amp	34
999 l and	68
999 l at	42
999 l count's	18
999 l every	24
999 l extension's	-32
999 l for	21
999 l from	28
999 l go	-26
999 l going	39
999 l got	22
999 l had	-20
999 l in	-51
999 l invert's	32
999 l it	-21
999 l kid's	-25
999 l knocked	-23
999 l laid	30
999 l leg	48
999 l limit's	59
999 l me	-15
999 l neutral's	26
999 l no	38
999 l nobody's	-52
999 l not	-21
999 l number's	-59
999 l one	-16
999 l out	32
999 l panel's	19
999 l pressure's	-41
999 l put	-41
999 l reading	23
999 l reads	22
999 l rise	52
999 l riser	37
999 l rm	-45
999 l room	-38
999 l section	-33
999 l set	18
999 l shows	21
999 l since	-19
999 l spacing	18
999 l suite	-27
999 l the	-77
999 l there	-39
999 l there's	16
999 l those	21
999 l to	51
999 l two	36
999 l two's	25
999 l used	17
999 l voltage	66
999 l volts	22
999 l wall's	25
999 l want	17
999 l wants	21
999 l was	-44
999 l. #	-17
999 l. $	-23
999 l. 's	38
999 l. ,	-16
999 l. -ed	-24
999 l. -ing	31
999 l. -s	68
999 l. 1	-28
999 l. unit	-36
999 oh	-43
999 r ,	23
999 r -	-35
999 r .	22
999 r 555	-20
999 r a	-38
999 r above	27
999 r already	-27
999 r and	31
999 r area	-32
999 r base	41
999 r before	-17
999 r block	-23
999 r bucks	-27
999 r centres	21
999 r common	32
999 r covered	-16
999 r double	-26
999 r down	25
999 r end	25
999 r every	-23
999 r for	-50
999 r give	44
999 r going	75
999 r he'll	-21
999 r high	39
999 r i	19
999 r meg	16
999 r net	-43
999 r not	24
999 r number	-19
999 r of	72
999 r off	15
999 r one	21
999 r over	-51
999 r return's	27
999 r screws	15
999 r so	-34
999 r the	26
999 r to	41
999 r today	26
999 r two	-19
999 r x	16
999 r. 's	24
999 r. ,	23
999 r. -	-35
999 r. -s	-19
999 r. .	22
999 r. 1	-41
999 r. letter	32
999 r. unit	-27
999 r. word	18
999 swallowed	-22
999 swallowed round	-18
999 words	63
999 words round	32
9999 figures 4	-60
9999 figures 5	-23
9999 l 	-16
9999 l ,	-32
9999 l asking	-23
9999 l at	91
9999 l bath's	19
9999 l by	-18
9999 l ceiling's	15
9999 l for	-24
9999 l from	-32
9999 l had	49
9999 l hundred	-25
9999 l in	-18
9999 l is	-46
9999 l lintel's	25
9999 l switch	-16
9999 l the	-25
9999 l to	15
9999 l want	-44
9999 l was	50
9999 l x	32
9999 l. #	-16
9999 l. 's	61
9999 l. ,	-32
9999 l. -ing	-23
9999 l. letter	32
9999 l. one	-25
9999 l. word	-25
9999 r already	-20
9999 r in	-30
9999 r it'll	-32
9999 r long	28
9999 r maple	-26
9999 r off	15
9999 r on	49
9999 r side	-15
9999 r to	26
9999 r today	-16
9999 r x	16
9999 r. letter	16
9999 r. unit	-35
9999 r. word	-25
9999 swallowed round	-16
9999 words	-24
9999 words round	49
: head 0	34
: head none	33
Name head none	-97
a a	-37
a aa	16
a about	-59
a above	25
a across	28
a act	-30
a acts	-27
a adds	-23
a advil	-18
a again	-51
a against	35
a ain't	22
a alarm	-16
a alder	-17
a all	-64
a along	25
a already	-23
a also	34
a an	-86
a anchors	26
a and	41
a anodes	29
a another	-36
a anything	23
a apart	83
a apiece	28
a are	37
a area	-21
a argue	-20
a around	-18
a as	-47
a ask	-38
a away	-34
a b	-46
a back	38
a bad	33
a bags	17
a bales	-63
a ballasts	27
a balusters	-24
a banksia	-31
a bar	19
a base	41
a bases	-20
a bath	50
a bathroom	-40
a baths	29
a batts	-65
a bay	-28
a be	51
a beam	16
a bears	-16
a bedroom	-24
a behind	27
a below	15
a bends	20
a bent	19
a birch	-33
a bit	20
a black	48
a blades	27
a blank	16
a blinds	16
a blocks	63
a blown	-16
a blue	-50
a boards	72
a bolt	22
a bone	-16
a books	-28
a boot	-19
a boots	-21
a both	36
a bottom	64
a bought	49
a box	-15
a bracket	22
a braille	28
a brass	54
a break	-16
a bridge	-53
a bring	26
a broken	39
a bronze	37
a brought	25
a bucket	17
a bucks	-84
a built	-31
a bulbs	16
a burned	26
a burner	-57
a bushing	23
a business	-25
a bust	-26
a but	73
a buzz	27
a buzzer	-25
a by	20
a bye	-24
a c	-31
a cabinet	-15
a cable	-37
a call	-24
a called	-16
a calling	-25
a calls	-15
a came	27
a can	50
a can't	-27
a cans	39
a cant	-57
a cap	16
a car	-16
a carry	-38
a case	31
a cash	-22
a casing	25
a caulk	25
a cb	-22
a ceiling	25
a cells	30
a center	54
a centers	51
a centimeter	23
a centre	27
a centres	25
a chance	-15
a change	-34
a changed	17
a check	35
a chimney	27
a chipped	51
a chippy	-26
a circuit	16
a circus	-27
a clamps	26
a clear	89
a client	-27
a clips	36
a clock	-28
a closed	48
a closet	35
a cm	-16
a coats	-29
a code	44
a color	-39
a come	-20
a comes	-21
a coming	61
a common	26
a complete	-28
a concrete	-39
a connections	-15
a contact	18
a corbels	-18
a cord	-21
a corner	50
a corridor	-17
a could	-20
a count	53
a country	-41
a covered	-16
a crack	-36
a cracked	85
a creams	-20
a crew	-88
a crows	-33
a damaged	37
a dash	23
a day	-75
a days	-35
a dead	27
a deal	-16
a deck	-21
a decks	42
a deep	76
a degree	22
a degrees	-18
a dentists	-100
a deny	-24
a desk	32
a diff	16
a dimmers	25
a dirt	20
a disposal	-46
a do	20
a dock	-27
a dollar	-52
a dollars	-25
a don't	-19
a done	-29
a dont	-16
a dot	-21
a down	-41
a dozen	-90
a drawer	-31
a drawing	20
a drew	-35
a drip	35
a drop	27
a drops	21
a dryer	-26
a dump	45
a dumpster	-23
a each	71
a easter	-28
a edge	43
a eggshell	31
a eighteen	19
a eighths	-20
a eights	24
a eighty	-17
a either	-23
a elbows	39
a eleventh	-42
a elm	-30
a elsewhere	25
a em	75
a empty	-19
a ends	46
a euro	-86
a even	61
a every	26
a everybody	-41
a everywhere	-27
a except	34
a extra	44
a extras	50
a faced	-17
a faces	-32
a fall	30
a falls	-26
a far	63
a faucet	-20
a fault	-34
a feed	-30
a few	24
a field	57
a fifteen	-34
a fill	33
a filter	27
a find	-36
a fine	34
a fingers	-22
a fire	-18
a firebrick	36
a fit	45
a five	-18
a fix	-65
a fixed	-29
a flapper	-56
a flashing	35
a flat	43
a flex	-26
a flicker	37
a flow's	17
a flowing	20
a foam	-45
a foot	67
a footers	45
a for	22
a form	30
a forward	-38
a four	-22
a fourteen	55
a framed	-50
a friday	21
a fridays	-29
a front	29
a frost	-19
a ft	-29
a full	18
a furnace	-51
a g	17
a gallon	-32
a game	-17
a gang	-61
a gary	22
a gasket	19
a gaskets	17
a gate	-24
a gauge	23
a get	-29
a gets	-23
a give	56
a glass	40
a glue	-27
a glued	-25
a go	65
a gone	-31
a good	55
a got	16
a grab	-16
a grade	38
a grate	-36
a grease	-23
a grille	-85
a grit	17
a ground	-28
a grout	48
a gun	-32
a guy	-33
a guys	-61
a had	-19
a haggles	-20
a hair	34
a hall	88
a hand	-16
a handle	-62
a hang	25
a hangers	64
a happy	16
a has	-92
a hauf	-15
a haul	-63
a have	31
a he	-74
a he'll	-18
a he's	-93
a head	-70
a heads	66
a heater	25
a helpers	-31
a here	52
a high	93
a him	-54
a hinges	-35
a hire	-19
a hit	-32
a holds	16
a hole	-73
a home	-22
a hook	-19
a hooks	24
a hot	45
a hours	-27
a house	36
a how	-21
a hr	-69
a hums	-49
a hundred	34
a hundreds	-26
a hydro	-29
a i	-53
a id	-33
a idlers	54
a if	-19
a in	19
a inch	19
a inches	23
a inside	-17
a instead	34
a iron	-38
a is	-45
a island	-19
a it	-31
a it'll	-35
a it's	-66
a joint	23
a just	32
a keep	22
a key	-49
a keys	-23
a kg	-18
a kid	-27
a kinds	-39
a kit	29
a kitchen	17
a knocked	-24
a labeled	23
a ladder	-33
a laid	18
a lamp	28
a landing	43
a lands	-16
a larch	-20
a laser	42
a last	28
a late	-36
a later	23
a latest	-31
a laundromats	-20
a laundry	15
a lavs	16
a lawsuit	-22
a lay	27
a layer	-69
a layers	21
a layout	18
a leaking	15
a leave	36
a left	44
a leg	55
a legs	30
a length	31
a let	-17
a lid	28
a lift	-60
a light	23
a lights	-18
a like	-59
a lime	47
a linear	19
a litre	27
a load	-16
a loaded	-30
a location	45
a lol	-68
a long	115
a longer	18
a look	-29
a lost	22
a lot	-58
a louvres	19
a love	-30
a lower	23
a lunch	-15
a mailbox	-32
a main	-24
a make	-37
a man	-39
a manifold	17
a manual	-29
a maple	-52
a masons	-17
a match	18
a mate	-37
a matt	26
a max	42
a me	-24
a medium	-53
a meg	16
a metal	-38
a meter	30
a middle	45
a midspan	23
a mill	-16
a minimum	25
a minute	-39
a minutes	-45
a mm	19
a modules	23
a molding	-34
a monday	-34
a month	23
a more	93
a morning	-65
a move	20
a moved	-70
a moves	-27
a muppet	-16
a my	15
a n	101
a nails	28
a need	44
a needs	-58
a net	-43
a never	-20
a next	-36
a niches	21
a night	-56
a nine	-35
a ninth	-27
a no	-22
a nobody	17
a nobody's	-21
a noon	-43
a north	20
a nos	21
a nose	46
a not	-37
a nothing	-27
a nuts	19
a o	-18
a o'clock	-81
a oc	41
a oclock	-25
a of	22
a office	-48
a offset	-23
a oh	-15
a ok	-22
a old	32
a one	-20
a ones	35
a open	19
a opener	-25
a opening	51
a or	17
a order	42
a ordered	25
a other	-37
a ought	52
a ounce	26
a out	-25
a outlet	-19
a outlets	36
a outside	-34
a over	35
a pack	-16
a packers	-57
a painted	31
a painters	-21
a pan	22
a panel	-74
a panels	27
a panhead	-27
a park	-18
a part	-56
a parts	65
a pascals	18
a pass	-21
a past	-90
a pattern	-66
a people	-16
a per	34
a picked	21
a piers	25
a pinched	-16
a pine	40
a plan	42
a plate	35
a plates	42
a play	-29
a please	26
a plenty	53
a plumber	-19
a plumbers	-26
a plus	-16
a plywood	24
a pm	-30
a pocket	30
a podium	-59
a pole	-34
a pool	-47
a pop	-17
a pops	19
a porch	21
a pound	-19
a pressure	22
a primer	34
a problems	-23
a proud	22
a pulled	15
a punch	-17
a put	-31
a quid	-27
a quiet	-17
a quit	-35
a rack	22
a radiator	21
a radio	-98
a rafters	17
a rain	-16
a raining	-41
a raise	44
a ran	38
a rang	-24
a range	-57
a rattle	23
a reach	-15
a ready	-48
a receps	18
a receptacles	21
a reducer	35
a remain	15
a replaced	-20
a required	-28
a reset	-30
a rest	16
a return's	38
a right	-26
a ring	33
a rise	20
a road	27
a roof	-32
a round	17
a rub	43
a rubber	22
a run	32
a running	36
a safe	40
a safety	-44
a sags	-16
a said	-54
a saints	-42
a sand	28
a satin	18
a says	-21
a screen	28
a screens	41
a screwed	18
a screws	18
a sealed	22
a second	-39
a seeds	-32
a serving	-16
a set	-17
a seven	-15
a seventh	-16
a seventy	45
a shakes	-19
a sharp	-38
a she	25
a she's	-18
a shed	25
a sheets	19
a shelves	-17
a shift	-44
a shimmed	36
a shims	24
a shingles	-18
a short	109
a should	62
a shower	-31
a shows	-21
a shut	-21
a shy	-16
a side	35
a sides	-16
a siding	36
a signed	-49
a silicone	-30
a sill	28
a sills	15
a since	-31
a sink	26
a sixes	-20
a sixteen	70
a sixteenths	-15
a sixty	-21
a skip	-21
a slats	-30
a slope	56
a slow	-54
a smokes	-16
a so	48
a sockets	-19
a some	33
a something	-26
a sorry	-23
a space	23
a spacer	-25
a spaces	31
a spare	17
a spares	37
a speeds	-18
a spots	-32
a spraying	25
a spring	-42
a sprinkler	19
a square	-49
a st	-33
a stage	-34
a stainless	21
a stair	-16
a stars	-44
a start	-18
a started	-33
a starting	-22
a station	17
a stay	-40
a steep	46
a step	-41
a steps	-16
a still	-40
a stock	27
a stone	-23
a stool	-44
a stops	-17
a straight	-33
a strikes	-53
a strings	37
a stroke	-15
a stud	19
a studs	74
a sugars	-19
a sunday	-49
a supplier	-17
a supply	18
a sure	-16
a swap	15
a swapped	-31
a sweep	23
a switch	47
a tag	-20
a take	49
a tall	38
a tap	31
a tape	45
a taped	27
a tempered	24
a template	-15
a tens	19
a test	-23
a that	-24
a their	-18
a then	-32
a these	54
a they	-20
a they're	31
a thick	37
a thing	-79
a things	-29
a think	-17
a thirteen	30
a this	-52
a those	-22
a thousand	-30
a three	-25
a through	-24
a throughout	19
a thursday	-26
a ties	-21
a tile	24
a tile's	45
a tiles	18
a times	-95
a tip	-21
a to	38
a toe	-27
a together	-71
a toilet	29
a toilets	32
a tonight	22
a too	-49
a took	-23
a torn	-18
a total	35
a touch	-20
a towel	15
a travelers	-19
a tread	-36
a tries	51
a tripped	-33
a trips	-22
a truck	23
a trucks	-23
a tub	20
a tube	35
a tubs	27
a tuesday	-40
a tune	-15
a turned	-31
a turns	17
a two	29
a twos	29
a type	88
a u	-26
a uncles	-17
a under	-26
a unit	-23
a until	32
a up	23
a us	-69
a usb	20
a use	17
a used	56
a v	-28
a vanity	-29
a vents	-18
a vinyl	18
a voices	-29
a volt	17
a wafers	22
a wall	50
a walls	37
a want	43
a wanted	17
a was	-17
a washer	-20
a waste	51
a water	-57
a watt	37
a wax	-33
a way	-59
a ways	-18
a we	21
a wednesday	26
a weekend	49
a were	22
a what	40
a whatever	-35
a where	39
a which	32
a while	24
a white	40
a who	-18
a wi	-15
a wide	24
a will	57
a window	-57
a windows	19
a wiped	-24
a wire	-21
a wire's	28
a wires	19
a with	20
a wood	-29
a work	41
a works	-33
a worth	-17
a would	-20
a wouldn't	-126
a wrongs	-40
a x	65
a yard	-95
a year	-31
a yet	-29
a you	-27
a you're	30
a zip	-49
b a	-40
b about	26
b above	33
b absent	-50
b acid	-28
b across	34
b acts	-31
b add	71
b address	-18
b adds	33
b adhesive	22
b again	-30
b against	41
b air	22
b aisle	-16
b alarm	-29
b alarm's	-23
b allow	90
b alone	-25
b already	28
b alright	-24
b amp	96
b amps	94
b an	-44
b anchors	16
b and	18
b another	-21
b any	19
b anything	28
b apart	58
b apartment	-16
b apiece	33
b apprentice	-55
b apt	-48
b aquastat	39
b architect	47
b are	72
b arm	-18
b around	-31
b arrived	40
b as	23
b ask	-16
b asked	32
b asking	-23
b attic	-18
b b	-59
b back	-19
b backfill	58
b bags	19
b bakery	-15
b bar	41
b bars	19
b basement	-45
b batten	28
b battery's	-45
b bay	-58
b bays	-65
b beam	16
b bearing	-26
b bearings	54
b because	36
b bed	-51
b bedroom	-52
b bedrooms	-21
b before	-19
b belts	19
b beltway	-85
b bench	34
b bent	32
b better	28
b between	-65
b bid	-40
b big	-60
b billed	-20
b bin	-33
b birdied	-23
b black	44
b blacks	-38
b bldg	-38
b blew	19
b blinds	19
b blood	-80
b blower	26
b boards	30
b bogeyed	-19
b bolts	48
b bond's	-20
b book	18
b booked	-39
b boss	-43
b both	-41
b bottom's	19
b bought	50
b bout	33
b box	-16
b boxes	32
b bracket	-31
b bracket's	-32
b brackets	27
b breaker	-50
b breaker's	65
b breakers	37
b bring	135
b bringing	34
b broke	98
b brought	83
b brushed	-19
b bucket	-19
b building	-32
b built	-20
b bulb	21
b bump	26
b bundles	88
b bunnings	-18
b burned	36
b bus	-28
b busted	-31
b but	32
b buy	70
b buzz	57
b call	45
b calls	29
b cam	-51
b came	78
b camera	-22
b cans	27
b capacitor's	22
b card	16
b carpet	-23
b carton	24
b cases	31
b casing	-22
b cat	-21
b caulk	-27
b cause	22
b cbd	18
b ceiling's	15
b cell	-23
b center	32
b cfm	40
b ch	-35
b changed	43
b channel	-60
b charge	-40
b charged	-53
b charging	-22
b chelsea	-16
b chimney	-25
b chlorine's	51
b choir's	-42
b circuit	-68
b claim's	-15
b class	-38
b cleaned	28
b clearance	17
b clips	38
b close	42
b closer	33
b closes	-36
b coat	-28
b code	-41
b code's	-63
b cold	34
b cold's	39
b collar	33
b color	-23
b colour	-34
b column	-43
b compacted	27
b compaction's	26
b composite	16
b concrete's	-16
b control	38
b corner	54
b correction	18
b count's	18
b counted	-50
b counter	-54
b counter's	45
b cover	45
b cover's	68
b covers	15
b cr	-22
b cracked	38
b crane's	-32
b credit	17
b crowned	30
b curb's	29
b curve	20
b customer	-31
b cut	103
b cylinder	18
b damper	16
b dash	-25
b dates	-18
b day	-78
b days	29
b deal	-45
b degrees	20
b delta's	45
b den	48
b desk	-44
b diagonals	77
b dial's	-16
b dialed	18
b didn't	-20
b digits	-41
b dimmers	53
b dining	-16
b dip	-33
b dirt	35
b dispenser	21
b display	-63
b do	-50
b doc	-16
b dock	-17
b dog	-17
b doing	-66
b don't	-61
b door	-68
b doors	-36
b double	-37
b dowel	34
b down	41
b downstairs	16
b draw	34
b drawer	-51
b drawing	32
b draws	34
b drew	-33
b drop	64
b dropped	16
b drops	43
b drove	21
b dry	41
b dryer	-17
b drywall	-48
b drywall's	29
b dump	19
b e	-22
b each	54
b east	-21
b edge	32
b egress	-21
b eight	25
b eighteen	30
b eighth	19
b eighths	58
b eighty	-32
b elbows	17
b electrician	-25
b elevation	-28
b elevator	-77
b em	-27
b embed	43
b end	25
b end's	-35
b ended	37
b ends	-35
b entry	-15
b epoxy	-38
b error	-50
b exam	-25
b exit	-64
b expansion	15
b expires	-80
b exposure's	58
b extension	-22
b extension's	-32
b exterior	-45
b eyes	-36
b f	-30
b fall's	19
b falls	-33
b fan	-18
b far	26
b fault	-27
b fee	-16
b feeder	-17
b feeding	22
b feeds	-20
b feet	19
b fell	45
b fence	-15
b field	-24
b fifteen	76
b fifty	21
b figure	38
b final	-16
b fingers	-17
b finished	-20
b first	44
b fit	-25
b fitted	-19
b fix	-24
b flange	20
b flashes	-98
b flat	-47
b flight	-63
b flights	-27
b floor	-30
b floor's	16
b flue	41
b footers	26
b footing's	32
b footy's	-18
b for	-17
b form	23
b found	53
b four	38
b fourteen	28
b fourth	-54
b framing	-20
b friday	-26
b from	-17
b front	34
b ft	24
b g	-19
b gallon	18
b gallons	-38
b game	-16
b gap	24
b gap's	-18
b garage	72
b gas	-60
b gasket	18
b gate	-56
b gauge	37
b gauged	21
b gave	49
b generator	63
b get	61
b gets	58
b gimme	90
b give	-34
b gives	-30
b glass	18
b glue	31
b go	21
b goal	-28
b going	-15
b gone	15
b got	25
b gotta	19
b gr	33
b grab	39
b grade's	22
b gray	-33
b green	-34
b grille	21
b grout's	58
b gutter's	-17
b guy	20
b guys	-27
b half	31
b hall	36
b hallway	23
b handrail's	33
b hangers	33
b happy	-84
b hard	18
b hardware	-47
b has	48
b hatch	-33
b haul	-62
b have	34
b he	-97
b he'll	-29
b he's	-173
b head	53
b header	36
b header's	50
b headroom's	40
b hearth's	32
b heater	-15
b heater's	17
b height	36
b height's	19
b held	32
b her	28
b here	-42
b hes	-58
b high	65
b him	-63
b hinge	17
b hinges	-49
b his	-67
b hit	-40
b hits	27
b hole	-31
b hole's	72
b holes	24
b holiday	-16
b homeruns	-23
b hood	18
b hook's	22
b hour	-50
b hour's	-91
b hours	-41
b how	28
b humidity	54
b humidity's	36
b hundred	31
b hung	65
b hwy	-38
b i	18
b i'd	48
b if	35
b im	-15
b in	-41
b inch	43
b inlet's	34
b innings	-16
b inside	36
b inspector	-53
b install	-27
b instead	19
b insulation's	16
b invert's	32
b invoice	-45
b ipad's	-38
b is	-17
b island	44
b it	29
b it'll	18
b it's	-58
b item	-25
b items	-34
b jan	27
b job	-47
b joists	36
b jumper	-83
b just	98
b k	-18
b kangaroos	-19
b keep	40
b kept	22
b key	-58
b keyed	-35
b kick	24
b kicks	104
b kid	-37
b kid's	-29
b kids	64
b kind	35
b kitchen	45
b kits	22
b knocked	-27
b knots	41
b lad's	-23
b ladder	-17
b laid	50
b landing	28
b lands	-46
b lap	108
b last	19
b lb	29
b least	62
b leaves	80
b led	17
b left	27
b leg	77
b lengths	22
b less	34
b let	-16
b level	-85
b lifted	36
b light	-16
b lights	43
b lime	21
b limit's	33
b line	-46
b lintel's	25
b litres	15
b little	-26
b load	32
b load's	-26
b lockbox	-18
b locker	-19
b log	-16
b lol	-21
b look	-39
b loop	-35
b loose	37
b lost	18
b lot	-94
b lounge	45
b low	49
b lp	-33
b lumber	-16
b lumber's	-43
b lunch	-18
b lvl's	38
b m	-47
b made	-44
b make	89
b makes	-18
b man	-23
b man's	-38
b marble	31
b margin's	-21
b mark	-36
b marked	-38
b married	-20
b materials	-54
b max	31
b maximum	33
b maybe	44
b mc	18
b me	28
b meant	19
b measure	-19
b measured	29
b measures	-19
b medallion	16
b medium	57
b meeting	-21
b meter	29
b meter's	17
b metered	25
b mil	16
b mile	-18
b min	17
b minute	21
b minutes	-24
b mirror	22
b mirror's	26
b missing	31
b mix	54
b mixed	46
b mm	28
b mock	-23
b mode	-36
b modules	27
b moisture	69
b moisture's	42
b mon	-42
b moon	-19
b more	51
b morning	43
b move	30
b moved	-89
b mpg's	-16
b mrs	-33
b mud	-40
b must	40
b my	-68
b nailed	22
b nails	31
b near	-19
b need	106
b needs	75
b neighbour	-16
b net	-35
b neutral's	26
b new	-16
b next	-50
b nineteen	-57
b nineteen's	28
b ninth	-27
b no	28
b nobody	-56
b nobody's	-52
b none	38
b north	22
b not	20
b note	-51
b nothing	52
b now	72
b number	-187
b number's	-96
b nursery	17
b ocean's	-29
b of	51
b off	-30
b off's	-15
b offered	-78
b office	-32
b offset	18
b oh	-36
b ohm	35
b ohms	53
b oil	-36
b okay	-44
b old	-58
b ones	32
b only	86
b opening	32
b opening's	26
b opens	-34
b or	-27
b ordered	45
b ot	-20
b our	-45
b out	28
b oven	21
b over	23
b overhang's	23
b owe	-27
b owes	-18
b owner	-17
b owns	-20
b p	-48
b pack	-52
b packed	23
b packers	-22
b packs	75
b pad	28
b paddock	-19
b padlock's	-28
b page	-21
b paid	-25
b paint	-30
b paint's	-16
b painted	-40
b pan's	19
b panel's	21
b paper	-43
b par	-16
b parks	-24
b part	-51
b passed	-31
b past	-35
b patch	21
b pavers	29
b pay	-17
b pcs	-51
b percent	18
b permit	-32
b ph	19
b phase	-23
b phone	-20
b phone's	-32
b pick	64
b picked	-17
b pickets	100
b pieces	29
b pier	-42
b pies	-26
b pin	-83
b pipe	52
b pipe's	16
b pitch	19
b pitched	-17
b place	-38
b plan	17
b plans	64
b plant	23
b plaster	16
b plastic	-20
b plates	21
b please	46
b plinth	33
b plot	-18
b plus	63
b po	-40
b point	21
b pole	-32
b poly	-23
b pool	-26
b popped	-36
b port	-19
b pounds	52
b pour	-38
b poured	26
b power's	-28
b powerball	-16
b pressure	16
b prob	19
b prv's	40
b psalm	-22
b pu	19
b pull	29
b pulled	-50
b pulling	39
b pulls	30
b pumped	68
b purlins	32
b put	75
b puts	33
b qty	59
b quarter	-40
b quiet	-20
b quit	-32
b quoted	-29
b r	-34
b race	-34
b rack	-64
b rafters	53
b rail	16
b rail's	31
b raise	64
b range	46
b rapid	-20
b rate's	-18
b rated	19
b ratio's	85
b rcbo	20
b re	-20
b read	55
b reading	57
b reads	77
b red	-33
b register's	38
b regulator's	17
b relief	40
b rental	-45
b replace	47
b report	-20
b return	54
b return's	40
b returned	35
b rev	20
b reveal's	37
b rh	25
b right	-69
b ring	-15
b rip	38
b ripped	20
b rise	75
b riser	-28
b rm	-90
b rock	27
b rod	20
b roll	-24
b rolled	-35
b rolls	-31
b roof	-25
b room	-56
b roughed	19
b roughly	36
b round	-62
b row	-43
b rows	24
b rtu	-83
b run	26
b running	19
b safe	-50
b sags	24
b same	-21
b sand	-36
b sanding	-16
b sat	22
b saturday	-31
b saves	-20
b saying	23
b scale	-80
b sch	-41
b screen	16
b screwed	17
b screws	17
b seal	-24
b seat	24
b seat's	-32
b section	-52
b send	-29
b sent	78
b service	22
b set	131
b sets	-61
b setting	-30
b seventeen	-24
b seventy	42
b shave	40
b she	-51
b she'll	-73
b she's	-85
b sheet	-52
b sheets	18
b shell's	-29
b shelves	36
b shelving	-46
b shift	-20
b shift's	-32
b shld	19
b shop	-19
b short	119
b shorted	77
b shot	16
b should	79
b should've	57
b shower	-42
b shows	71
b side	50
b sign's	28
b silicone	33
b sill	46
b sill's	40
b since	-71
b siri	-23
b sister	50
b site	-32
b six	27
b sixteenth	-31
b sixty	46
b slab	44
b slab's	45
b sleeper's	16
b slip	-17
b slope's	31
b slump	103
b smokes	-23
b smoking	-33
b smoko	-46
b snake	-36
b snow	17
b so	31
b soft	23
b sold	72
b solid	-25
b some	28
b somebody	56
b something	-28
b sometime	-58
b somewhere	97
b sorry	21
b space	20
b spaced	57
b spacing	54
b span's	17
b spec	62
b sphere	45
b spot	-18
b spring's	-27
b squares	25
b squeak	28
b stack	27
b stage	-34
b stainless	28
b stair	-33
b stairs	-23
b standing	25
b start	-47
b started	-62
b starting	-41
b starts	-21
b stat	18
b static	41
b static's	39
b station	-20
b stem	37
b step	-28
b step's	48
b steps	-25
b sticks	16
b stirrups	74
b stitch	-20
b stock	26
b stock's	-31
b stone	36
b string	28
b strip	-21
b strips	29
b stub	30
b studio	-20
b studs	58
b stuff	44
b sub	-24
b sub's	-16
b subcool	33
b subcool's	19
b subfloor	35
b subfloor's	19
b suite	-35
b summer	-29
b superheat	34
b superheat's	25
b supply	41
b supply's	52
b swap	42
b sweet	-19
b swing	-32
b switch	-22
b table	-99
b tag	-46
b tagged	-24
b take	-18
b takes	-28
b talks	-39
b tank's	15
b tap	40
b team's	-45
b temp	83
b ten	-27
b tenant	-35
b terms	-68
b test	-49
b tested	49
b th	-34
b than	50
b that	-22
b that'll	-18
b that's	-55
b the	-19
b their	-36
b then	-76
b there	-20
b thermostat's	53
b they	-43
b they'll	-37
b they're	-86
b they've	-21
b thick	37
b thin	63
b thing	-30
b think	-15
b thinks	-23
b third	-22
b thirteen	49
b this	-51
b those	29
b though	26
b thousand	-36
b throat's	57
b through	-19
b throw	41
b throwing	-24
b throws	-31
b thurs	-17
b thursday	-18
b ticket	-35
b tide's	-46
b tie	25
b ties	39
b tight	20
b til	-44
b tile	35
b till	-40
b time	-39
b times	-57
b tires	-33
b to	47
b toast	17
b toilet	32
b tomorrow	-47
b took	18
b top	-34
b torque	53
b total	30
b town	15
b track	-17
b tracking	-15
b trailer	-39
b trap	26
b tray	35
b tread	-36
b treads	25
b trim	28
b trimmed	22
b tripped	-27
b tripping	24
b truck's	-51
b tubes	16
b tune	-88
b turned	-46
b twenty	58
b txt	-21
b type	-97
b u	-92
b under	20
b unit	-109
b units	-26
b uppers	16
b upsize	35
b upstairs	36
b upstand's	39
b use	42
b used	87
b utility	-16
b v	-19
b valve	67
b van	51
b vanity	64
b vent	35
b ver	-16
b vikings	-40
b voices	-15
b voltage	66
b volts	33
b voted	-24
b wait	22
b waiting	20
b walk	-37
b wall	58
b wall's	41
b wallpaper	-24
b walnut	-40
b want	54
b wanted	40
b wants	49
b wardrobe	-53
b was	20
b wash	-31
b water's	29
b way	-44
b we	26
b we're	-62
b we've	25
b wednesday	-28
b wee	-38
b week	-31
b well	26
b went	24
b wet	51
b what's	-30
b when	26
b where	26
b white	18
b wide	54
b width	27
b window	-62
b windows	25
b wire's	36
b with	33
b won't	25
b wood	-26
b wood's	18
b work	-23
b works	-17
b worth	-16
b would	20
b x	43
b yard	-40
b years	-37
b your	-29
b zero	-56
b zone	-99
b zz	-31
b ×	24
bare 1	-57
bare 2	60
bare 3	26
behind area area	23
behind area crews'	-80
behind area end	20
behind area fixture	-19
behind area mark	-76
behind area part	-38
behind area plain	-43
behind break mark	-105
behind crews' area	-16
behind crews' end	-45
behind crews' fixture	30
behind crews' material	51
behind crews' number	27
behind crews' others'	-15
behind crews' part	42
behind crews' strange	22
behind crews' surface	38
behind crews' unknown	-43
behind defect crews'	-21
behind defect end	-17
behind defect plain	44
behind end area	-34
behind end crews'	40
behind end defect	122
behind end finish	-52
behind end fixture	33
behind end mark	-83
behind end number	17
behind end part	64
behind end plain	37
behind end strange	-50
behind end verb	-63
behind finish area	-19
behind finish end	-24
behind finish mark	-31
behind finish verb	27
behind fixture defect	-25
behind fixture end	-35
behind fixture others'	-25
behind fixture verb	-16
behind mark break	-28
behind mark crews'	33
behind mark defect	15
behind mark end	-33
behind mark finish	15
behind mark fixture	42
behind mark mark	-70
behind mark number	33
behind mark part	48
behind mark surface	-36
behind mark tool	17
behind mark unknown	38
behind material end	-17
behind material fixture	-43
behind material material	29
behind material others'	32
behind material plain	39
behind number end	-40
behind number number	-41
behind number unknown	-21
behind others' end	78
behind others' mark	110
behind others' material	31
behind others' others'	20
behind others' part	-34
behind others' plain	45
behind others' role	-29
behind others' strange	18
behind others' surface	-47
behind others' unknown	-28
behind part crews'	-15
behind part defect	-52
behind part mark	15
behind part material	-18
behind part plain	-49
behind part verb	-17
behind plain area	56
behind plain crews'	18
behind plain defect	31
behind plain end	35
behind plain finish	18
behind plain mark	66
behind plain material	71
behind plain number	27
behind plain part	24
behind plain plain	15
behind plain strange	-34
behind plain surface	25
behind plain verb	28
behind strange crews'	-22
behind strange mark	22
behind strange plain	-17
behind strange unknown	18
behind surface defect	-33
behind surface end	56
behind surface fixture	24
behind surface part	-37
behind surface plain	-33
behind surface surface	16
behind tool end	-63
behind tool plain	-60
behind unknown end	-110
behind unknown mark	-50
behind unknown material	-68
behind unknown number	-48
behind unknown others'	-33
behind unknown part	-27
behind unknown plain	-92
behind verb break	20
behind verb crews'	-62
behind verb end	-27
behind verb mark	31
behind verb material	-20
behind verb others'	-40
behind verb part	-16
behind verb plain	-27
behind verb strange	-30
behind verb surface	-17
behind verb verb	-17
claims 2	-45
counted head area	75
counted head crews'	18
counted head defect	-23
counted head finish	-20
counted head fixture	54
counted head material	124
counted head others'	-157
counted head part	117
counted head plain	-61
counted head role	-58
counted head strange	-99
counted head surface	41
counted head tool	46
counted head unknown	18
counted head verb	-39
counted next area	15
counted next defect	44
counted next fixture	32
counted next mark	-55
counted next material	60
counted next number	20
counted next others'	-21
counted next part	39
counted next role	-50
counted next strange	-66
counted next surface	-15
counted next tool	42
counted next work	-26
form 0figures 4	-50
form figures 2	46
form figures 3	18
form figures 4	-60
form figures 5	-45
form oh	-43
form parts	75
form swallowed	-22
form swallowed round	-21
head 1	42
head 3	50
head none	-21
l of cars	-37
l of clock	-93
l of kin	-38
l of media	18
l of money	-49
l of papers	-39
l of past	29
l of phones	-52
l of roads	-99
l of school	-58
l of services	-28
l of sport	-35
l1 	33
l1 
	-99
l1 #	-17
l1 $	-92
l1 (	22
l1 +	40
l1 ,	53
l1 -	-55
l1 3	-17
l1 :	64
l1 a	19
l1 about	41
l1 above	16
l1 add	58
l1 adds	33
l1 after	-53
l1 against	29
l1 aisle	-16
l1 all	67
l1 allow	44
l1 amp	34
l1 an	-64
l1 and	91
l1 another	-16
l1 apartment	-26
l1 apt	-48
l1 are	43
l1 around	-32
l1 asking	-23
l1 at	17
l1 b	-23
l1 backfill	58
l1 bath	-79
l1 bath's	19
l1 bay	-89
l1 be	80
l1 beam	35
l1 bed	-52
l1 bedroom	-78
l1 been	34
l1 before	-32
l1 between	-22
l1 big	-37
l1 bin	-33
l1 bldg	-37
l1 bogeyed	-19
l1 bottom	-35
l1 bottom's	19
l1 bought	74
l1 bout	33
l1 box	-20
l1 bracket	24
l1 breaker	-64
l1 bring	114
l1 broke	16
l1 brought	73
l1 building	-42
l1 bus	-28
l1 but	38
l1 buy	93
l1 by	25
l1 called	-17
l1 can	28
l1 cat	-28
l1 ceiling's	15
l1 ch	-35
l1 change	22
l1 channel	-33
l1 charging	-22
l1 circuit	-86
l1 class	-25
l1 closet	32
l1 coat	-35
l1 code	-91
l1 code's	-55
l1 cold's	39
l1 correction	18
l1 count's	18
l1 counter	-23
l1 cover's	50
l1 cr	-22
l1 crowned	30
l1 cut	37
l1 day	-98
l1 delta's	45
l1 den	16
l1 dirt	21
l1 do	-18
l1 dock	-17
l1 doing	-17
l1 done	16
l1 door	-44
l1 double	-33
l1 drawer	-41
l1 drew	-30
l1 drops	37
l1 drove	23
l1 e	-23
l1 each	-39
l1 edge	22
l1 elevator	-23
l1 eleven	-25
l1 embed	43
l1 end's	-29
l1 error	-50
l1 every	22
l1 exit	-61
l1 expires	-48
l1 exposure's	58
l1 extension's	-32
l1 exterior	-25
l1 eyes	-36
l1 f	-17
l1 fall's	19
l1 falls	-18
l1 fault	-22
l1 feeder	-19
l1 fell	46
l1 finished	-23
l1 fit	19
l1 five	-31
l1 flashes	-70
l1 flat	-44
l1 floor	-55
l1 forward	53
l1 found	55
l1 four	-45
l1 fourteen	-34
l1 from	-26
l1 front	32
l1 full	47
l1 gap's	-16
l1 garage	63
l1 gate	-21
l1 get	154
l1 gets	56
l1 gimme	90
l1 going	39
l1 gone	-26
l1 good	-31
l1 got	117
l1 grab	62
l1 grade	-31
l1 grade's	16
l1 hall	53
l1 has	92
l1 have	73
l1 he's	-108
l1 head	17
l1 headroom's	26
l1 hearth's	32
l1 height	36
l1 height's	19
l1 hit	-26
l1 hole	-66
l1 hole's	32
l1 hour's	-50
l1 house	-15
l1 humidity's	32
l1 hundred	-25
l1 hung	40
l1 hwy	-20
l1 in	-80
l1 inch	61
l1 install	-22
l1 invert's	32
l1 invoice	-31
l1 is	60
l1 island	18
l1 it	83
l1 it's	-52
l1 item	-24
l1 items	-17
l1 job	-36
l1 jumper	-29
l1 just	91
l1 kept	47
l1 key	-64
l1 kid's	-25
l1 kitchen	31
l1 knock	24
l1 knocked	-23
l1 lad's	-23
l1 ladder	-18
l1 laid	30
l1 landing	26
l1 lap	47
l1 last	30
l1 least	62
l1 leaves	74
l1 left	31
l1 level	-56
l1 like	-17
l1 limit's	33
l1 line	-55
l1 lintel's	25
l1 loop	-35
l1 lost	22
l1 lot	-94
l1 low	15
l1 lp	-33
l1 lvl	-40
l1 m	-29
l1 makes	-18
l1 man's	-38
l1 mark	-32
l1 maybe	99
l1 me	43
l1 meant	19
l1 measure	-32
l1 measured	22
l1 meter's	17
l1 mm	-37
l1 mode	-36
l1 moisture	30
l1 my	15
l1 nd	-22
l1 need	131
l1 needs	67
l1 net	-36
l1 neutral's	26
l1 new	-83
l1 nine	-17
l1 nineteen	-17
l1 nobody's	-52
l1 not	53
l1 note	-51
l1 now	36
l1 number	-185
l1 number's	-86
l1 ocean's	-29
l1 of	-45
l1 off	-19
l1 offered	-26
l1 oh	-43
l1 old	-80
l1 on	-34
l1 one	-40
l1 ones	57
l1 only	79
l1 open	-17
l1 opened	-17
l1 or	-36
l1 order	22
l1 ordered	21
l1 other	-26
l1 ought	-25
l1 out	94
l1 outlets	17
l1 overhang's	23
l1 owns	-20
l1 p	-50
l1 packers	-22
l1 paddock	-19
l1 page	-18
l1 pan's	18
l1 panel	-30
l1 panel's	21
l1 part	-30
l1 past	-20
l1 pier	-41
l1 pin	-25
l1 plant	23
l1 plate	29
l1 plot	-18
l1 plus	57
l1 po	-16
l1 port	-19
l1 poured	16
l1 pressure's	-28
l1 psalm	-22
l1 pull	41
l1 pulled	20
l1 pulling	36
l1 pump	-19
l1 put	45
l1 quarter	49
l1 quoted	-23
l1 r	-66
l1 rack	-31
l1 ran	48
l1 rate's	-18
l1 rated	39
l1 ratio's	50
l1 read	54
l1 reading	44
l1 reads	53
l1 red	39
l1 replace	16
l1 replaced	34
l1 returned	17
l1 reveal's	19
l1 rh	19
l1 right	-52
l1 rise	52
l1 riser	-22
l1 rm	-96
l1 rolled	-34
l1 room	-86
l1 roughly	36
l1 row	-25
l1 rtu	-18
l1 rule	-20
l1 run	36
l1 running	19
l1 sags	23
l1 saves	-20
l1 say	22
l1 says	39
l1 sch	-47
l1 seat	-17
l1 seat's	-32
l1 second	-21
l1 section	-40
l1 see	45
l1 sent	33
l1 set	60
l1 setting	-24
l1 shave	40
l1 she's	-49
l1 sheet	-55
l1 shelf	-35
l1 short	98
l1 shower	-23
l1 shows	39
l1 side	19
l1 since	-41
l1 sister	31
l1 six	23
l1 sixteen	-19
l1 sixty	-20
l1 sleeper's	16
l1 slide	-44
l1 slip	-18
l1 slope's	31
l1 so	92
l1 solid	-30
l1 spacing	22
l1 span's	17
l1 spec	25
l1 square	-43
l1 stack	22
l1 stage	-34
l1 stair	-26
l1 static's	18
l1 station	-20
l1 step	-37
l1 still	59
l1 strike	-45
l1 studio	-24
l1 suite	-31
l1 superheat	17
l1 swap	38
l1 sweet	-19
l1 switch	-53
l1 table	-18
l1 tag	-28
l1 take	36
l1 takes	-29
l1 talks	-39
l1 temp	23
l1 ten	-16
l1 th	-17
l1 than	47
l1 that	-81
l1 that's	-20
l1 the	-111
l1 them	-35
l1 then	-21
l1 there	-30
l1 there's	17
l1 thing	-43
l1 this	-25
l1 throat's	57
l1 throw	41
l1 ticket	-19
l1 til	-43
l1 till	-44
l1 to	60
l1 tomorrow	15
l1 took	60
l1 top	-20
l1 tread	-40
l1 treads	17
l1 truck	-58
l1 turned	-35
l1 twelve	-36
l1 two	39
l1 two's	25
l1 type	-71
l1 under	88
l1 unit	-130
l1 up	46
l1 us	50
l1 use	38
l1 used	93
l1 vanity	26
l1 ver	-16
l1 vikings	-19
l1 voltage	66
l1 volts	22
l1 wall	37
l1 wall's	32
l1 want	52
l1 wanted	21
l1 wants	48
l1 was	85
l1 we're	47
l1 well	40
l1 wide	18
l1 x	86
l1 your	-39
l1 zone	-101
l1 £	-41
l1 ×	24
l1. #	29
l1. $	-92
l1. 's	91
l1. (	22
l1. +	40
l1. ,	53
l1. -	-55
l1. -ed	61
l1. -ing	25
l1. -ly	57
l1. -s	66
l1. /	-90
l1. 1	-65
l1. :	64
l1. Name	-97
l1. letter	-48
l1. one	-122
l1. unit	-60
l1. £	-41
l2 	-18
l2 
	21
l2 '	46
l2 (	36
l2 ,	22
l2 1	-61
l2 11	43
l2 118	-32
l2 14	18
l2 18	-31
l2 180	30
l2 31	-26
l2 34	19
l2 400	-22
l2 5	-16
l2 555	-20
l2 6	-46
l2 60	15
l2 600	33
l2 68	44
l2 9	17
l2 95	-37
l2 a	-135
l2 acts	-31
l2 again	-40
l2 all	-21
l2 allow	58
l2 already	17
l2 an	-42
l2 anything	21
l2 apartment	28
l2 apprentice	-50
l2 aquastat	32
l2 architect	26
l2 asked	25
l2 at	-102
l2 basement	25
l2 battery's	-45
l2 be	34
l2 bedroom	16
l2 bench	27
l2 billed	-20
l2 black	40
l2 blacks	-38
l2 block	23
l2 blood	-41
l2 bolts	19
l2 bond's	-20
l2 booked	-17
l2 boss	-28
l2 bottom	18
l2 box	24
l2 boxes	41
l2 bracket	33
l2 breaker's	41
l2 broke	65
l2 bundles	88
l2 burned	33
l2 buzz	57
l2 by	-73
l2 call	93
l2 calls	20
l2 came	21
l2 cap	22
l2 change	-68
l2 changed	28
l2 charge	-17
l2 charged	-53
l2 check	-20
l2 chimney	-31
l2 chlorine's	51
l2 choir's	-29
l2 clearance	16
l2 close	31
l2 closer	40
l2 closes	-30
l2 code	73
l2 color	-22
l2 column	-44
l2 comes	26
l2 coming	-37
l2 compacted	27
l2 compaction's	26
l2 corner	24
l2 could	16
l2 count	-29
l2 counter's	34
l2 curve	18
l2 cut	51
l2 day	-25
l2 days	49
l2 diagonals	57
l2 dial's	-16
l2 dip	-33
l2 display	-65
l2 dog	-21
l2 don't	-80
l2 dowel	24
l2 down	26
l2 drawing	18
l2 dropped	25
l2 dryer	-25
l2 drywall's	23
l2 eight	34
l2 em	36
l2 epoxy	-32
l2 fan	-32
l2 fault	-21
l2 fifty	-31
l2 flights	-27
l2 flue	42
l2 foot	33
l2 for	-67
l2 forty	-35
l2 forward	-49
l2 four	42
l2 fourth	-55
l2 friday	-33
l2 from	-43
l2 ft	36
l2 full	-58
l2 g	-19
l2 gallons	-19
l2 gap's	-17
l2 gas	-33
l2 gate	-25
l2 gave	71
l2 get	-36
l2 give	-30
l2 gives	-49
l2 glass	25
l2 going	-41
l2 gone	16
l2 good	24
l2 gotta	55
l2 grab	-20
l2 guy	46
l2 half	-39
l2 hang	16
l2 happy	-50
l2 hardware	-63
l2 haul	-62
l2 have	23
l2 he	-38
l2 head	50
l2 header	26
l2 header's	31
l2 heads	-30
l2 held	24
l2 her	26
l2 here	-26
l2 hes	-28
l2 high	58
l2 hinges	-27
l2 his	-20
l2 hole's	18
l2 hook's	18
l2 hot	-18
l2 hour	-27
l2 hours	-26
l2 house	-19
l2 humidity	30
l2 hundred	23
l2 i	85
l2 i'd	33
l2 i'll	23
l2 in	-51
l2 inch	37
l2 inches	25
l2 innings	-16
l2 inside	36
l2 instead	55
l2 insulation's	16
l2 ipad's	-38
l2 it	16
l2 it'll	32
l2 it's	-37
l2 joists	22
l2 kid	-37
l2 kit	24
l2 kitchen	-33
l2 knots	41
l2 lands	-44
l2 lap	79
l2 left	51
l2 leg	59
l2 lengths	22
l2 level	-27
l2 lime	21
l2 load's	-26
l2 loose	34
l2 low	60
l2 lunch	-17
l2 lvl	27
l2 make	81
l2 materials	-30
l2 maybe	-33
l2 me	-25
l2 medium	23
l2 meter	47
l2 mil	-41
l2 mile	-17
l2 missing	48
l2 mix	41
l2 mixed	20
l2 mm	36
l2 moisture's	34
l2 mon	17
l2 monday	27
l2 more	38
l2 morning	28
l2 mpg's	-16
l2 need	16
l2 needs	27
l2 neighbour	-16
l2 new	29
l2 nineteen	-33
l2 no	-86
l2 not	-59
l2 number	-23
l2 of	-51
l2 of body	28
l2 of cars	-33
l2 of clock	-38
l2 of food	-26
l2 of kin	-40
l2 of media	-16
l2 of money	-62
l2 of past	-19
l2 of phones	32
l2 of roads	31
l2 of school	-85
l2 off	-76
l2 off's	-15
l2 office	-16
l2 offset	18
l2 oh	-15
l2 ok	-28
l2 old	-18
l2 on	-60
l2 ones	30
l2 only	51
l2 opening	16
l2 ot	-20
l2 out	-50
l2 outlets	21
l2 over	22
l2 owe	-27
l2 owes	-18
l2 pack	-18
l2 packs	70
l2 pad	37
l2 paint	-20
l2 parks	-24
l2 part	-19
l2 passed	-22
l2 pcs	-71
l2 per	-21
l2 permit	-26
l2 ph	19
l2 phone's	-32
l2 pick	74
l2 pickets	82
l2 pin	-30
l2 pipe	37
l2 pipe's	16
l2 plate	-16
l2 posts	16
l2 powerball	-16
l2 pressure's	21
l2 prob	30
l2 prv's	40
l2 pumped	17
l2 purlins	23
l2 put	66
l2 puts	33
l2 qty	64
l2 quarter	-28
l2 quiet	-19
l2 r	-52
l2 race	-34
l2 rafters	24
l2 rail	30
l2 raise	59
l2 ran	-48
l2 range	29
l2 rated	-23
l2 real	29
l2 red	-61
l2 return	50
l2 return's	30
l2 room	-31
l2 rough	19
l2 round	-64
l2 rows	24
l2 rtu	-50
l2 sand	-17
l2 says	24
l2 scale	-16
l2 screws	34
l2 see	-19
l2 sent	27
l2 set	60
l2 sets	-77
l2 seven	-18
l2 seventy	30
l2 she'll	-58
l2 she's	-16
l2 sheets	-19
l2 shelf	30
l2 shift's	-32
l2 shim	22
l2 shop	-16
l2 short	44
l2 shorted	73
l2 shot	62
l2 should	55
l2 should've	34
l2 sill	33
l2 sill's	40
l2 site	-20
l2 six	-29
l2 sixteen	17
l2 sixteenth	-44
l2 slump	42
l2 smokes	-23
l2 smoking	-33
l2 snake	-36
l2 so	32
l2 soft	20
l2 sometime	-28
l2 somewhere	81
l2 spaced	56
l2 spec	45
l2 sphere	45
l2 splash	19
l2 spring's	-33
l2 stairs	-29
l2 stairwell	22
l2 start	18
l2 starting	-41
l2 static	19
l2 static's	15
l2 sticks	34
l2 still	-29
l2 stirrups	74
l2 stock's	-31
l2 string	25
l2 studs	35
l2 sub	-24
l2 subfloor's	19
l2 summer	-27
l2 supply's	27
l2 table	-57
l2 take	-48
l2 tape	19
l2 ten	-67
l2 terms	-43
l2 tested	49
l2 that	51
l2 that's	-33
l2 the	-92
l2 them	25
l2 thermostat	-17
l2 thermostat's	48
l2 they	-16
l2 they're	-43
l2 thin	22
l2 third	-36
l2 thirteen	-29
l2 three	71
l2 through	-17
l2 throws	-31
l2 thursday	-15
l2 tide's	-46
l2 ties	30
l2 time	-23
l2 to	-45
l2 toast	15
l2 tomorrow	-57
l2 top	-16
l2 trap	30
l2 truck	16
l2 truck's	-19
l2 two	-52
l2 type	-51
l2 u	-33
l2 unit	-22
l2 us	-34
l2 vanity	51
l2 wall	34
l2 wants	-20
l2 was	-72
l2 washer	29
l2 water's	28
l2 ways	-32
l2 we	67
l2 we're	-30
l2 wee	-38
l2 went	38
l2 were	30
l2 what's	-40
l2 width	26
l2 will	24
l2 window	-59
l2 windows	17
l2 years	-41
l2 you	21
l2 zero	-56
l2. #	-18
l2. '	46
l2. (	36
l2. ,	22
l2. -ed	51
l2. -s	45
l2. /	17
l2. Name	-30
l2. letter	35
l2. n't	-80
l2. one	-77
l2. unit	15
l3 
	-19
l3 (	18
l3 ,	28
l3 -	-17
l3 1	-32
l3 1.5	29
l3 10	-65
l3 12	30
l3 16	-24
l3 1750	38
l3 2	15
l3 2214	-22
l3 3	19
l3 5	-17
l3 6120	-25
l3 7	-41
l3 8	18
l3 9	-19
l3 a	20
l3 about	-21
l3 all	-36
l3 already	16
l3 also	-22
l3 am	-15
l3 amps	45
l3 an	55
l3 apart	47
l3 apiece	33
l3 are	20
l3 as	25
l3 at	-89
l3 b	-27
l3 back	-21
l3 basement	-15
l3 bath	71
l3 batten	28
l3 bay	49
l3 be	-31
l3 better	18
l3 between	-63
l3 birdied	-19
l3 boards	16
l3 both	-23
l3 bottom	17
l3 boxes	-17
l3 building	25
l3 busted	-29
l3 but	-33
l3 buy	-18
l3 by	46
l3 call	-26
l3 came	70
l3 can't	19
l3 change	50
l3 changed	20
l3 channel	-36
l3 cleaned	34
l3 clear	32
l3 code	-31
l3 concrete's	-16
l3 cracked	30
l3 crane's	-24
l3 cut	40
l3 deep	-15
l3 den	29
l3 digits	-41
l3 dimmers	67
l3 drop	18
l3 dryer	22
l3 dump	19
l3 each	56
l3 eight	30
l3 eighty	-55
l3 ended	37
l3 expires	-40
l3 falls	-20
l3 feeding	22
l3 first	67
l3 flashes	-39
l3 flat	-27
l3 flew	-15
l3 for	16
l3 form	26
l3 four	-29
l3 fourteen	22
l3 from	-24
l3 gallons	-33
l3 generator	33
l3 get	-85
l3 goal	-26
l3 goes	16
l3 going	-36
l3 gone	25
l3 grab	31
l3 gray	-28
l3 grout's	50
l3 he	-59
l3 he's	-26
l3 heads	19
l3 her	-25
l3 hes	-33
l3 him	-30
l3 hinges	-37
l3 his	-21
l3 hole	24
l3 hour	-25
l3 hour's	-16
l3 hours	-16
l3 hung	21
l3 i'd	55
l3 i'm	36
l3 i've	20
l3 if	54
l3 inch	32
l3 inches	-31
l3 inlet's	34
l3 is	-45
l3 it's	-20
l3 items	-18
l3 its	-28
l3 jumper	-63
l3 keep	48
l3 kicks	59
l3 kids	33
l3 knock	-24
l3 last	-29
l3 left	-24
l3 leg	56
l3 let	-32
l3 lifted	35
l3 line	-16
l3 long	16
l3 look	-18
l3 loose	16
l3 lumber's	-43
l3 marked	-54
l3 me	28
l3 mix	64
l3 more	35
l3 move	29
l3 moved	-50
l3 my	-53
l3 new	16
l3 next	-58
l3 nine	51
l3 nobody	-51
l3 not	15
l3 nothing	36
l3 of	35
l3 office	-16
l3 oh	22
l3 ohms	24
l3 okay	-17
l3 old	55
l3 on	22
l3 ones	-22
l3 other	47
l3 ought	28
l3 out	-29
l3 outlets	-28
l3 owner	-19
l3 panel	21
l3 paper	-22
l3 pick	27
l3 plans	67
l3 plinth	26
l3 press	-18
l3 pump	18
l3 pumped	53
l3 put	-54
l3 quit	-33
l3 r	29
l3 rack	-40
l3 rafters	31
l3 ratio's	46
l3 register's	34
l3 regulator's	17
l3 relief	40
l3 rental	-22
l3 rev	33
l3 rip	38
l3 rise	30
l3 room	27
l3 row	-18
l3 run	27
l3 s	26
l3 safe	-28
l3 says	-23
l3 see	-25
l3 service	22
l3 seven	24
l3 seventy	22
l3 she	-40
l3 shelves	16
l3 should	27
l3 sign's	28
l3 since	-37
l3 six	-22
l3 slide	42
l3 smoko	-27
l3 sold	-16
l3 some	30
l3 somebody	37
l3 stairs	19
l3 start	-36
l3 started	-60
l3 steps	-34
l3 still	-36
l3 stub	28
l3 style	-16
l3 subcool	23
l3 supposed	17
l3 switch	-22
l3 tap	22
l3 tape	-17
l3 team's	-33
l3 temp	48
l3 ten	-28
l3 test	-52
l3 th	-17
l3 that's	-18
l3 the	41
l3 them	23
l3 there	45
l3 they	-19
l3 they're	-19
l3 thick	52
l3 thinks	-23
l3 thirteen	56
l3 thirty	-17
l3 three	-51
l3 thursday	18
l3 ticket	-20
l3 tie	33
l3 tile	27
l3 times	-36
l3 tires	-33
l3 to	23
l3 tomorrow	22
l3 too	29
l3 top	-16
l3 torque	53
l3 trim	22
l3 tripped	-22
l3 truck	21
l3 tune	-88
l3 twelve	36
l3 two	-35
l3 u	-43
l3 unit	25
l3 up	-35
l3 upsize	35
l3 upstairs	20
l3 valve	20
l3 van	15
l3 vent	20
l3 vikings	-22
l3 voices	-15
l3 voted	-20
l3 ways	19
l3 we	-33
l3 well	24
l3 wet	18
l3 white	35
l3 wide	18
l3 wire's	20
l3 with	16
l3 won't	15
l3 wood	-32
l3 x	29
l3 yard	-30
l3 you	-54
l3 zz	-31
l3. (	18
l3. ,	28
l3. -	-17
l3. -ed	-29
l3. -ing	25
l3. n't	34
l3. unit	17
letter head 0	-57
long 10	-38
long 30	39
long 6	19
long undefined	-16
more figures 5	-23
more l. word	-48
more r 	-32
more r. #	-32
more r. word	-26
more words round	-41
names 0 strange 0	31
names 0 strange 1	-70
names 0 strange 2	-110
names 1	-17
names 1 strange 1	-54
names 2 strange 1	34
names 2 strange 2	51
names 3	23
names 4	19
of cars	35
of food	-32
of kin	-60
of media	-88
of money	-63
of past	-22
of phones	-56
of roads	-27
of school	-34
of services	30
of so many 0	39
of so many 1	-40
of so many 2	-43
of so many 3	-41
of sport	-22
one head none	-128
r of body	-48
r of cars	34
r of clock	-32
r of food	-32
r of kin	-77
r of money	-161
r of services	47
r of sport	-29
r1 )	-59
r1 ,	45
r1 -	-73
r1 .	32
r1 12	20
r1 2	45
r1 3	-21
r1 4	26
r1 555	-20
r1 7	-30
r1 :	-114
r1 @	16
r1 a	-29
r1 aa	16
r1 above	40
r1 across	32
r1 adds	-23
r1 advil	-18
r1 again	-44
r1 against	37
r1 alarm	-21
r1 along	16
r1 already	-46
r1 an	-67
r1 anchors	18
r1 apart	75
r1 apiece	28
r1 area	-29
r1 as	-27
r1 at	54
r1 b	-38
r1 baby	15
r1 back	36
r1 bad	27
r1 banksia	-22
r1 base	29
r1 baths	22
r1 batts	-65
r1 bays	-26
r1 be	22
r1 bedroom	-21
r1 belt	-15
r1 blade	-39
r1 blades	27
r1 blinds	41
r1 blocks	15
r1 blown	22
r1 board	36
r1 boards	48
r1 bracket	25
r1 brass	37
r1 bricks	-16
r1 broke	-21
r1 broken	21
r1 bucks	-130
r1 burner	-57
r1 business	-15
r1 but	28
r1 by	40
r1 c	-18
r1 call	15
r1 calls	-17
r1 came	15
r1 can	-27
r1 cells	31
r1 cement	-17
r1 centers	22
r1 centres	24
r1 clear	35
r1 closed	49
r1 closets	18
r1 code	-17
r1 come	-19
r1 coming	33
r1 common	31
r1 connections	-15
r1 corner	48
r1 corridor	-19
r1 covered	-16
r1 cr	27
r1 cracked	22
r1 creams	-20
r1 crew	-32
r1 crows	-33
r1 cut	18
r1 d	-17
r1 dash	-25
r1 dead	28
r1 deep	63
r1 den	33
r1 dentists	-43
r1 dimmers	26
r1 dollar	-52
r1 dollars	-25
r1 don't	31
r1 done	49
r1 dont	-15
r1 door	-19
r1 doors	34
r1 double	19
r1 drip	16
r1 elbows	16
r1 elsewhere	19
r1 euro	-91
r1 even	28
r1 exit	19
r1 extra	63
r1 extras	50
r1 faced	-17
r1 fall	36
r1 fifty	-32
r1 fingers	-22
r1 fire	-16
r1 five	-65
r1 flat	25
r1 floor	20
r1 flowing	16
r1 forty	-21
r1 four	-55
r1 fourteen	-18
r1 from	-23
r1 full	21
r1 gang	-76
r1 gaskets	17
r1 get	-17
r1 gets	-29
r1 give	44
r1 go	-56
r1 goes	-32
r1 good	22
r1 got	-22
r1 grille	-38
r1 guys	-42
r1 had	-21
r1 hall	38
r1 hand	-31
r1 handle	-59
r1 has	-69
r1 have	32
r1 he	-16
r1 he'll	-37
r1 head	20
r1 heads	62
r1 helpers	-31
r1 here	84
r1 high	92
r1 hinges	29
r1 hit	-22
r1 hole	-80
r1 hooks	31
r1 hundreds	-26
r1 i	58
r1 i'll	23
r1 i've	-15
r1 in	33
r1 instead	30
r1 iron	-28
r1 is	-113
r1 ish	-16
r1 it	-20
r1 it'll	-35
r1 it's	-18
r1 just	63
r1 keys	-29
r1 kinds	-39
r1 larch	-20
r1 last	-26
r1 laundromats	-20
r1 layer	-69
r1 layers	21
r1 leaks	16
r1 left	81
r1 leg	-17
r1 legs	-20
r1 lift	-23
r1 like	21
r1 location	45
r1 long	71
r1 loose	23
r1 love	-30
r1 lower	18
r1 man	-20
r1 maple	-44
r1 max	32
r1 meg	16
r1 modules	23
r1 more	112
r1 nail	24
r1 need	38
r1 needs	-59
r1 net	-43
r1 new	46
r1 next	-30
r1 niches	21
r1 ninety	-54
r1 ninth	-24
r1 north	-17
r1 nos	21
r1 not	47
r1 nothing	-24
r1 now	-35
r1 o'clock	-90
r1 oc	41
r1 oclock	-26
r1 off	50
r1 old	16
r1 outlets	30
r1 outta	24
r1 over	-22
r1 packers	-19
r1 panel	-124
r1 panhead	-27
r1 part	-56
r1 parts	54
r1 pascals	17
r1 people	-18
r1 per	69
r1 piers	23
r1 plate	31
r1 pm	-28
r1 problems	-23
r1 proud	24
r1 pulled	28
r1 put	-30
r1 quarter	-18
r1 quid	-28
r1 rafters	16
r1 rattle	23
r1 reads	-36
r1 receps	18
r1 reducer	17
r1 return's	33
r1 roof	-26
r1 rubber	22
r1 running	30
r1 runs	48
r1 sash	-22
r1 says	-59
r1 screens	44
r1 screws	16
r1 second	-68
r1 seeds	-32
r1 shakes	-19
r1 sharp	-38
r1 she	-20
r1 shelf	-50
r1 shift	-42
r1 shims	21
r1 shingles	-25
r1 short	67
r1 shot	-18
r1 should	84
r1 shows	-20
r1 side	-31
r1 sides	-28
r1 silicone	-29
r1 since	-30
r1 sink	50
r1 six	-27
r1 slope	19
r1 smoke	18
r1 smokes	-16
r1 so	38
r1 soft	-22
r1 something	-38
r1 space	22
r1 spaces	31
r1 spare	44
r1 speeds	-18
r1 split	-21
r1 spots	-24
r1 sprinkler	38
r1 square	-19
r1 stage	-34
r1 stars	-44
r1 steps	-38
r1 still	60
r1 stops	-20
r1 straps	17
r1 strikes	-53
r1 studs	42
r1 sugars	-19
r1 sure	-19
r1 switch	28
r1 tall	19
r1 ten	31
r1 the	-48
r1 then	-47
r1 they	18
r1 thick	43
r1 things	-23
r1 thirty	17
r1 this	-31
r1 through	-16
r1 til	-18
r1 tile	18
r1 till	-22
r1 times	-109
r1 tip	-21
r1 to	46
r1 together	-41
r1 toilet	35
r1 toilets	32
r1 tomorrow	-68
r1 tonight	27
r1 total	28
r1 toward	28
r1 treads	25
r1 tries	51
r1 tripped	-34
r1 two	-33
r1 u	-15
r1 up	17
r1 usb	19
r1 valve	-21
r1 voices	-29
r1 wafers	20
r1 walls	32
r1 wants	-22
r1 was	-64
r1 waste	18
r1 wax	17
r1 way	-66
r1 ways	-45
r1 we're	-34
r1 wednesday	26
r1 were	28
r1 where	35
r1 white	23
r1 wide	59
r1 will	48
r1 window	-46
r1 windows	53
r1 wood	-27
r1 work	43
r1 wrongs	-40
r1 x	58
r1. 's	28
r1. )	-59
r1. ,	45
r1. -	-73
r1. -ing	31
r1. .	32
r1. 1	20
r1. :	-114
r1. @	16
r1. Name	-36
r1. letter	59
r1. one	-133
r1. word	32
r2 "	26
r2 (	-30
r2 *	-19
r2 -	19
r2 .	19
r2 10	21
r2 100	32
r2 12	66
r2 15	23
r2 17	-19
r2 2	-43
r2 20	-17
r2 21	-31
r2 24	-18
r2 250	39
r2 28	25
r2 450	18
r2 5	-32
r2 6	20
r2 7	-42
r2 8	39
r2 :	-76
r2 a	-25
r2 about	-30
r2 acts	-27
r2 against	-20
r2 all	-17
r2 also	-39
r2 an	-20
r2 and	25
r2 are	60
r2 around	-19
r2 ask	40
r2 at	-43
r2 b	-29
r2 back	-27
r2 ballasts	18
r2 bath	-19
r2 be	63
r2 bedroom	-22
r2 bent	34
r2 better	19
r2 board	42
r2 bought	33
r2 box	-79
r2 boxes	18
r2 brackets	-20
r2 bust	-26
r2 but	29
r2 buy	16
r2 buzz	27
r2 by	-29
r2 c	-27
r2 call	-16
r2 cant	-27
r2 carry	-15
r2 caulk	34
r2 center	54
r2 change	-50
r2 changed	19
r2 circus	-26
r2 clear	40
r2 client	-27
r2 close	34
r2 code	60
r2 concrete	-20
r2 cr	-20
r2 crack	-27
r2 cracked	100
r2 crown	-34
r2 day	-27
r2 days	-18
r2 deny	-20
r2 didn't	-19
r2 dirt	17
r2 do	79
r2 done	-24
r2 down	-107
r2 drawing	20
r2 each	79
r2 easter	-28
r2 eight	-26
r2 eighteen	-20
r2 eighty	-39
r2 em	73
r2 epoxy	-32
r2 every	46
r2 everybody	-20
r2 everywhere	-32
r2 extra	-17
r2 faces	-32
r2 fan	-25
r2 far	52
r2 fifty	-19
r2 fill	28
r2 filter	19
r2 fine	31
r2 five	-53
r2 floor	-36
r2 foot	23
r2 footers	31
r2 for	51
r2 forty	22
r2 forward	-38
r2 four	-46
r2 fourteen	51
r2 framed	-36
r2 fridays	-29
r2 from	-31
r2 front	59
r2 furnace	-40
r2 gang	-18
r2 get	-24
r2 glue	-30
r2 go	65
r2 got	28
r2 grade	25
r2 ground	-19
r2 hair	34
r2 half	17
r2 hang	55
r2 hauf	-15
r2 he	-40
r2 he's	-32
r2 head	34
r2 heads	16
r2 hinges	-48
r2 his	21
r2 hole	-25
r2 hot	57
r2 hour	-34
r2 house	19
r2 hr	-41
r2 hung	18
r2 i	21
r2 if	-16
r2 inch	44
r2 inside	25
r2 it	18
r2 it's	20
r2 kitchen	17
r2 later	23
r2 laundry	-18
r2 leaking	17
r2 lift	-16
r2 litre	27
r2 lol	-25
r2 look	-16
r2 loose	-16
r2 lost	46
r2 louvres	19
r2 low	15
r2 me	-17
r2 medium	-53
r2 midspan	23
r2 mirror	-16
r2 missing	28
r2 morning	-25
r2 night	-49
r2 nineteen	-45
r2 ninety	23
r2 no	-15
r2 nobody's	-25
r2 noon	-42
r2 not	17
r2 nuts	21
r2 of	-32
r2 oh	-21
r2 ok	20
r2 one	-28
r2 ones	28
r2 open	32
r2 or	22
r2 order	-19
r2 ounce	26
r2 over	35
r2 pad	-17
r2 panel	22
r2 past	-30
r2 patch	21
r2 pattern	-33
r2 per	-24
r2 plaster	21
r2 play	-30
r2 plus	24
r2 pop	-17
r2 pops	19
r2 pound	16
r2 primer	42
r2 rail	-17
r2 range	-55
r2 rest	48
r2 ring	33
r2 road	27
r2 rolls	25
r2 row	25
r2 rub	43
r2 running	-17
r2 s	-16
r2 same	15
r2 saturday	-21
r2 screws	-21
r2 set	-28
r2 seven	18
r2 she	30
r2 she's	21
r2 shelf	21
r2 shimmed	35
r2 short	22
r2 should	-18
r2 shower	-31
r2 shut	-16
r2 shy	-16
r2 side	41
r2 siding	36
r2 sign	22
r2 signed	-48
r2 single	34
r2 site	53
r2 six	-64
r2 skip	-17
r2 slow	-18
r2 so	-16
r2 spraying	25
r2 spring	-21
r2 st	-24
r2 start	-25
r2 started	-33
r2 starting	-22
r2 station	17
r2 sticks	-19
r2 still	-49
r2 stool	-35
r2 stop	24
r2 sunday	-37
r2 swap	29
r2 switches	-19
r2 tape	16
r2 ten	49
r2 tens	16
r2 the	56
r2 there's	-28
r2 these	49
r2 they	-25
r2 thing	-62
r2 this	44
r2 those	-23
r2 thousand	-25
r2 three	-56
r2 thursday	-28
r2 time	-20
r2 times	19
r2 today	34
r2 tomorrow	15
r2 trips	-18
r2 trucks	-16
r2 tuesday	-19
r2 twelve	23
r2 twenty	28
r2 two	-24
r2 u	-16
r2 under	16
r2 upstairs	-17
r2 us	-70
r2 used	20
r2 want	27
r2 wants	-24
r2 way	-18
r2 ways	25
r2 week	27
r2 weekend	31
r2 were	25
r2 what	45
r2 windows	-16
r2 with	-17
r2 won't	22
r2 works	-38
r2 worth	19
r2 x	36
r2 you're	30
r2. "	26
r2. (	-30
r2. *	-19
r2. -	19
r2. -ed	19
r2. -ing	29
r2. .	19
r2. :	-76
r2. Name	-72
r2. letter	20
r2. n't	-16
r2. one	-76
r2. unit	60
r3 "	-25
r3 %	32
r3 '	-35
r3 12	18
r3 14	-35
r3 24	15
r3 28	-28
r3 3	29
r3 5	44
r3 6	-35
r3 8	39
r3 :	-56
r3 ;	-32
r3 a	-67
r3 about	-20
r3 act	-30
r3 after	-22
r3 again	-30
r3 air	29
r3 an	-22
r3 and	19
r3 anodes	29
r3 are	22
r3 ask	-16
r3 at	35
r3 bag	-24
r3 bags	16
r3 base	-16
r3 bath	38
r3 bears	-20
r3 behind	28
r3 black	49
r3 blinds	-20
r3 blue	-28
r3 board	-58
r3 boards	49
r3 books	-28
r3 bottom	89
r3 box	41
r3 braille	28
r3 break	-38
r3 broken	27
r3 bronze	24
r3 brought	32
r3 bucket	20
r3 buzzer	-18
r3 by	23
r3 cabinet	-15
r3 can	48
r3 cant	-32
r3 carton	29
r3 case	22
r3 cash	-23
r3 cb	-22
r3 centre	20
r3 change	-15
r3 chimney	21
r3 chipped	48
r3 clips	25
r3 clock	-28
r3 close	-38
r3 closet	45
r3 color	-49
r3 corner	32
r3 count	48
r3 counter	-17
r3 cover	30
r3 cracked	-38
r3 crew	-67
r3 cut	-16
r3 damaged	22
r3 dash	34
r3 dead	23
r3 degree	20
r3 den	-17
r3 dock	-18
r3 done	-32
r3 door	67
r3 dot	-21
r3 down	18
r3 drawer	-19
r3 dryer	22
r3 dump	45
r3 dumpster	-23
r3 each	-34
r3 edge	44
r3 eggshell	17
r3 eight	-44
r3 either	-24
r3 eleven	-30
r3 ends	47
r3 enough	26
r3 every	-21
r3 falls	-26
r3 fault	-22
r3 feet	17
r3 field	57
r3 fifty	18
r3 fit	35
r3 fixed	-29
r3 flapper	-35
r3 flashing	48
r3 flat	19
r3 flow's	17
r3 for	-46
r3 from	15
r3 furnace	-23
r3 gang	42
r3 garage	-27
r3 gauge	23
r3 glass	16
r3 go	16
r3 goes	15
r3 good	-36
r3 got	47
r3 grab	-22
r3 grate	-20
r3 grille	-51
r3 grout	31
r3 guys	-33
r3 hangers	25
r3 has	32
r3 haul	-46
r3 he	-29
r3 he's	-65
r3 head	-33
r3 heater	41
r3 held	53
r3 her	28
r3 high	23
r3 hinge	21
r3 hinges	-32
r3 hour	25
r3 hours	-19
r3 how	-47
r3 i	-18
r3 i'll	-21
r3 idlers	54
r3 if	-26
r3 in	-27
r3 inch	-34
r3 is	-17
r3 it	49
r3 it's	31
r3 kept	-18
r3 kitchen	30
r3 knocked	-24
r3 landing	35
r3 laser	41
r3 late	-21
r3 latest	-20
r3 leave	32
r3 left	-27
r3 leg	64
r3 length	45
r3 level	17
r3 lift	-37
r3 like	-62
r3 lock	24
r3 long	38
r3 lost	-15
r3 lot	-30
r3 manifold	17
r3 manual	-29
r3 mate	-20
r3 middle	44
r3 min	-19
r3 minute	-39
r3 minutes	-45
r3 missing	-43
r3 molding	-34
r3 monday	-39
r3 month	27
r3 moved	-24
r3 nail	-36
r3 need	17
r3 neutral	18
r3 never	-21
r3 new	-47
r3 nine	19
r3 nineteen	26
r3 nose	46
r3 of	17
r3 off	-26
r3 oh	35
r3 old	-31
r3 on	-20
r3 opener	-25
r3 order	23
r3 other	35
r3 ought	18
r3 out	69
r3 over	-15
r3 packers	-29
r3 painted	38
r3 panel	18
r3 parts	20
r3 plan	49
r3 plenty	23
r3 plumbers	-23
r3 podium	-52
r3 pool	-47
r3 porch	34
r3 quarter	18
r3 radio	-48
r3 raining	-41
r3 ran	44
r3 range	-23
r3 required	-22
r3 reset	-45
r3 right	-32
r3 row	-24
r3 run	40
r3 runs	-15
r3 safe	39
r3 safety	-44
r3 saints	-42
r3 sand	23
r3 serving	-16
r3 set	18
r3 seven	-23
r3 seventy	43
r3 sheet	22
r3 shelf	18
r3 short	40
r3 shot	-28
r3 side	17
r3 sill	23
r3 sills	15
r3 sixteen	28
r3 sixty	18
r3 soft	16
r3 some	21
r3 spring	-18
r3 stay	-30
r3 steep	46
r3 steps	24
r3 still	-32
r3 straps	-20
r3 street	-16
r3 stripped	25
r3 sunday	-16
r3 take	46
r3 tape	50
r3 ten	-45
r3 test	-24
r3 then	15
r3 thermostat	-41
r3 they	-18
r3 this	-17
r3 three	25
r3 through	-37
r3 tile's	40
r3 today	-21
r3 together	-33
r3 tomorrow	21
r3 tread	-35
r3 truck	-20
r3 tub	21
r3 tubes	33
r3 tubs	27
r3 twelve	-20
r3 twenty	45
r3 two	-48
r3 type	66
r3 uncles	-17
r3 under	-21
r3 up	-38
r3 use	28
r3 van	20
r3 vanity	-15
r3 vent	-20
r3 waste	27
r3 water	-17
r3 way	53
r3 we	41
r3 we're	23
r3 week	-21
r3 were	26
r3 wire's	28
r3 with	-20
r3 x	34
r3 year	-20
r3. "	-25
r3. %	32
r3. '	-35
r3. -ed	51
r3. -ing	-23
r3. -ly	-31
r3. :	-56
r3. ;	-32
r3. n't	-24
r3. one	20
r3. unit	36
rule 	-60
rule eachOf	76
rule pair	166
rule quantity/decimal	47
rule quantity/mixed	45
rule quantity/whole+taken-back	34
rule range	21
size 1	-31
size 20	23
size 60	21
size 9999	-35
size more	-63
strange 0	18
strange 1	-43
strange 2	-26
strange 3	-48
talk -1	-33
talk -2.5	-87
talk -5	-108
talk -9	-88
talk 0	-45
talk 1	-44
talk 14	54
talk 20	44
talk 9	69
talk each -1	-67
talk each -2.5	-126
talk each -5	-70
talk each 0	-48
talk each 1	-46
talk each 14	33
talk each 20	76
talk each 9	35
talk each less	-52
unit head 0	-45
unit head 1	-27
unit head none	-32
unit percent	-16
units 0	-41
units 1	54
units 2	30
word head 2	18
word head 3	54
word head none	-16
£ head none	-41
`;
