/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after about defect	-15
after at defect	-28
after at part	44
after at surface	19
after at word	-26
after behind fixture	-47
after by area	-38
after by defect	-51
after by fixture	-14
after by part	57
after end defect	-16
after for defect	-27
after from part	39
after in defect	-33
after in material	75
after in part	70
after in verbish	-33
after mark defect	-24
after mark word	-42
after number word	-23
after on defect	-43
after on fixture	52
after on material	58
after on part	-46
after on surface	59
after on verbish	29
after out surface	26
after over defect	-24
after quantity area	24
after quantity defect	-12
after quantity fixture	28
after quantity material	17
after quantity part	31
after quantity size	42
after quantity surface	-28
after quantity word	-17
after term area	23
after term finish	-32
after term fixture	57
after term material	-19
after term part	40
after term size	43
after term surface	-31
after term verbish	26
after to defect	-18
after up defect	-15
after with defect	-35
after word area	95
after word defect	-36
after word finish	-25
after word material	14
after word part	27
after word size	-33
after word surface	14
after word tells	-68
after word tool	19
after word verbish	22
article a	-26
article the	20	13
as ruled all far	49	64	59
as ruled all far+here		16	18
as ruled all far+phrase		41	22
as ruled all here	49	25	27
as ruled all pair	77	38	17
as ruled all phrase		14
as ruled all told			19
as ruled none far	-16	-30	-22
as ruled none here	-16		-13
as ruled none pair		19	29
as ruled none told		-14
as ruled some here	19	32
as ruled some pair		34	21
as ruled some phrase		17
as ruled some told			-34
behind about -1	40
behind about -2	-18
behind about -3	-22
behind about -4	18
behind about here-after	-26
behind about here-before	39
behind at +1	-21
behind at -1	25
behind at -2	-19
behind at -4	-33
behind at here-after	-14
behind at here-before	39
behind behind +1	-14
behind behind -1	12
behind behind -2	-16
behind behind -3	-21
behind behind -4	-12
behind behind here-after	35
behind by +1	-45
behind by -1	17
behind by -2	-43
behind by -3	-62
behind by -4	74
behind by here-after	-48
behind by here-before	66
behind down -1	32
behind down -2	-24
behind down -3	19
behind down here-after	-23
behind down here-before	-16
behind end -1	33
behind end -3	-14
behind end here-after	-19
behind for -1	81
behind for -2	43
behind for -3	32
behind for -4	-32
behind for here-after	-74
behind for here-before	-55
behind from +1	-18
behind from -1	21
behind from -2	-25
behind from -3	-25
behind from -4	31
behind from here-before	25
behind in -3	-21
behind in -4	-17
behind in here-after	15
behind mark +1	-25
behind mark -2	61
behind mark -3	16
behind mark -4	-59
behind mark here-after	-31
behind mark here-before	36
behind near here-after	-25
behind near here-before	19
behind number +1	-28
behind number -1	-27
behind number -3	26
behind number -4	-47
behind of +1	-31
behind of -1	97
behind of -3	27
behind of here-after	28
behind off +1	-19
behind off -1	-31
behind off -3	-19
behind off -4	36
behind on +1	-30
behind on -1	26
behind on -3	-37
behind on here-before	20
behind out -3	-32
behind out here-before	53
behind over -1	-16
behind over -2	39
behind over -3	-25
behind quantity +1	-35
behind quantity -1	-14
behind quantity -2	-17
behind quantity -3	27
behind quantity here-before	36
behind short +1	-21
behind short -1	-61
behind short -3	76
behind short -4	-43
behind short here-after	21
behind short here-before	24
behind term +1	-22
behind term -2	-26
behind term -3	32
behind term here-before	22
behind through -2	-17
behind through here-after	25
behind through here-before	26
behind to +1	16
behind to -1	-30
behind to -2	-30
behind to -4	-25
behind to here-before	57
behind under +1	53
behind up -1	-57
behind up -2	81
behind up -3	-46
behind up -4	-30
behind up here-after	-43
behind up here-before	59
behind with +1	-34
behind with -1	25
behind with -2	-35
behind with -4	-21
behind with here-after	-29
behind with here-before	31
behind word +1	-17
behind word -2	25
behind word here-before	12
behind-verb			12
between 	18
between come	47
between get	-47
between get a	-14
between has a	18
between have	48
between have a	18
between i	88
between is	33
between it	38
between still	52
between they	-36
between with	20
by far		-13	-17
by far lacks none 0	33		-13
by far lacks none 1	-20	-26	-30
by far lacks none 2	-18	-14	-17
by far lacks none 3		-21
by far lacks points 1	27		-15
by far lacks points 2	-56	-22	18
by far lacks points 3		-19
by far+here	-13
by far+here lacks none 1			-17
by far+here lacks none 3	-19	-14
by far+here lacks points 1	27	19	17
by far+here lacks points 2	52		21
by far+here lacks points 3	42
by far+phrase lacks none 0		16	22
by far+phrase lacks none 3		35
by far+phrase lacks points 0		-18	58
by far+phrase lacks points 1		16
by far+phrase lacks points 2		34	-17
by far+phrase lacks points 3		17
by here	16
by here lacks none 1	26	43	33
by here lacks none 2	18	-19
by here lacks none 3		-25	-21
by here lacks points 1	-46	-17
by here lacks points 2	-30	-20	-21
by here lacks points 3	-40	-24	-36
by pair		28	27
by pair lacks none 2		30	32
by pair lacks none 3	13	32	21
by pair lacks points 2		30
by pair lacks points 3		16	21
by phrase lacks none 0			13
by phrase lacks none 2		18
by phrase lacks points 1			-13
by phrase lacks points 2			-13
by told lacks none 0			-25
by told lacks none 1		-24
by told lacks none 2		-13
by told lacks none 3			31
by told lacks points 0			-16
by told lacks points 1			17
by told lacks points 2			-19
counted bare	24	32	15
counted count	27	49	-21
counted current		48
counted length		-13	-22
counted pack	25	-13	-19
counted pressure	-46		-31
counted time	-19	-28	-13
counted voltage	17
counted volume	-31	14
counted weight	-17	13
does add far+phrase		39
does add here		39
does add kind material		80
does add kind part		28
does add kind word		-33
does add material		44
does add word		-24
does adjust far+here			-34
does adjust here			54
does adjust kind fixture			14
does ask far+here		42
does ask kind fixture		-12
does ask kind material		19
does ask kind surface		-56
does ask kind word		26
does ask pair		40
does ask phrase		22
does ask told		-13
does ask word		29
does be area		-20
does be defect		-37	-12
does be finish		16	-15
does be fixture		28	34
does be material		14
does be part			-12
does be size		-27
does be surface		-14	-17
does be tells		-39
does be tool		-13	-36
does be work		37
does bend kind word			30
does bend phrase			43
does bend word			14
does blow 			-26
does blow far			62
does blow far+here			54
does blow far+phrase			-32
does blow kind material			50
does blow kind word			-23
does blow phrase			-21
does blow word			-40
does bolt far			49
does bolt far+here			-43
does bolt here			-41
does bolt kind material			-12
does bolt kind verbish			45
does bolt kind word			-33
does book 		55
does book far		-61
does book far+here		37
does book far+phrase		-55
does book here		-17
does book kind verbish		-32
does book kind word		47
does book phrase		-25
does book told		78
does box far+here		-32	-23
does box kind area			-22
does box kind fixture		27
does box kind material		21	63
does box kind verbish		-38	-16
does box kind word		-28
does box pair		28	43
does box phrase			12
does box told			-25
does bring area		-42
does bring defect		-14
does bring far		-17
does bring far+here		24
does bring far+phrase		21
does bring fixture		-21
does bring here		-18
does bring kind area		-37
does bring kind defect		-16
does bring kind material		16
does bring kind part		21
does bring kind tool		55
does bring kind verbish		-14
does bring material		17
does bring pair		29
does bring part		46
does bring phrase		26
does bring size		-13
does bring told		-19
does bring tool		33
does buy 		-34
does buy far		45
does buy far+here		58
does buy far+phrase		-89
does buy here		-26
does buy kind fixture		20
does buy kind word		24
does buy material		20
does buy phrase		-22
does buy told		-14
does call 		-13	24
does call far		36	-57
does call far+here		-43
does call far+phrase		49	23
does call here		17
does call kind fixture		-24	56
does call kind material			-13
does call kind surface		122
does call pair		68
does call phrase		29	55
does call told		-40	-33
does call word			37
does cap far+here			51
does cap here			-15
does cap kind surface			19
does caulk far		-13	-13
does caulk far+here		29
does caulk far+phrase		-18
does caulk here		17	52
does caulk kind area			13
does caulk kind material		21
does caulk kind surface			21
does caulk phrase		19
does change 		-28	13
does change area			-41
does change defect		-35	-25
does change far		31	-14
does change far+here		82
does change far+phrase		29	53
does change here			-17
does change kind defect		-24
does change kind material		63	45
does change kind part		52	65
does change kind surface			-45
does change kind verbish		68	12
does change kind word			-16
does change material		43	47
does change pair		-35	59
does change part		28	60
does change phrase			-30
does change told		-23	40
does change word			-37
does check 		51	-23
does check defect		-39
does check far		-49	-32
does check far+here		38	15
does check far+phrase		25
does check fixture		-46
does check here		30	70
does check kind defect		-31
does check kind material		30
does check kind part		-30
does check kind surface		13
does check kind verbish		27
does check kind word		24
does check material		27
does check part		-27
does check phrase		27
does check told		34
does check verbish		28
does clamp 			-15
does clamp far			-24
does clamp kind defect			-13
does clamp kind word			-27
does clamp told			-14
does clean area			-15
does clean defect			46
does clean far			-19
does clean far+here			52
does clean fixture			-30
does clean kind defect			14
does clean kind fixture			-16
does clean kind material			32
does clean kind part			18
does clean kind word		66	24
does clean material			-40
does clean pair			25
does clean part			42
does clean told			-14
does clear 			-22
does clear far			17
does clear here			30
does clear kind word			31
does clear told			-20
does close far		-13	-13
does close far+here		27
does close far+phrase		-18	12
does close here		13
does close kind defect		-14
does close kind finish		-18
does close kind material		47
does close kind part		-23	24
does close kind word		-40
does close pair		38
does close surface		28
does close word		-19
does come area		26
does come defect		-27
does come far		-14
does come far+here		-21	-42
does come fixture		-22
does come here		19	-18
does come kind area		-12
does come kind fixture		-26
does come kind material		16	-22
does come kind part			-17
does come kind size		-18
does come kind surface		-23
does come kind tells		-30
does come kind tool		-22
does come pair		-26
does come size		-20
does come tool		-24
does come verbish		75
does come word		39
does complete far+here			-18
does complete here			-17
does complete kind material			-78
does cover 		-37
does cover far		16	-28
does cover far+here		66
does cover here		-29
does cover kind material		32
does cover kind part		31
does cover kind word		46
does cover phrase		-20
does cover told		-15
does crack far+here		-17
does cure 		17
does cure far		-63
does cure kind material		30
does cure told		-17
does cut 		-29
does cut area		-64	-37
does cut defect		42
does cut far+here		49
does cut far+phrase		22	-12
does cut finish			-16
does cut fixture		12
does cut here			17
does cut kind area		-38	-14
does cut kind defect		41	-12
does cut kind fixture		27	38
does cut kind material		23
does cut kind part			-13
does cut kind size		44	17
does cut kind surface		32
does cut kind tells		27	25
does cut kind tool			-44
does cut kind verbish			-20
does cut kind word		19	29
does cut material		45	42
does cut pair		39	40
does cut phrase		-20	-21
does cut size		-30	63
does cut surface		37	-25
does cut told		-14
does cut tool			-15
does cut verbish			-55
does cut word			49
does dig 		-29	-15
does dig far		-18	36
does dig far+here		41	-52
does dig far+phrase		62
does dig here		-29	29
does dig kind material		-48
does dig kind word		88
does dig told		-13	-16
does do 		14
does do area		-36
does do defect		18
does do far		-18	-14
does do far+here		32
does do far+phrase		-42
does do fixture		-20
does do here		-47
does do kind area		-23	29
does do kind finish		-17
does do kind fixture		-18	41
does do kind part		16	20
does do kind surface			20
does do kind word		-39	-22
does do material		36
does do pair		-20	15
does do part		43
does do phrase		-17
does do size		-25
does do surface		-25
does do told		19	-14
does do word		-35
does drill 		-24
does drill far		-22
does drill far+here		46
does drill far+phrase		22	-34
does drill here			49
does drill kind area			18
does drill kind defect			-30
does drill kind material		48	14
does drill kind part		43	-16
does drill kind size		79
does drill kind surface		-42	36
does drill kind word			-17
does drill material			53
does drill surface			18
does drill told		-21
does drill word			-14
does drip 			-14
does drip far			47
does drip kind defect			-30
does drip kind material			-29
does drip kind part			-54
does drip kind word			-46
does drop 			-12
does drop far		12
does drop far+here		54
does drop kind material		32
does drop kind part		47
does drop kind word		16
does drop material		29
does drop pair		-60
does drop part		50
does drop told		-18
does drop word		17
does dry 		-36	-13
does dry area		41
does dry far+here		-38	45
does dry far+phrase		44	-28
does dry here		-48
does dry kind area		34
does dry kind defect		-14
does dry kind fixture		82	17
does dry kind material		-15
does dry kind part		-14	-19
does dry kind surface		-16	-17
does dry kind tells		-37
does dry kind verbish			-36
does dry kind word		-33
does dry material		-86
does dry pair		40	-52
does dry phrase		-48
does dry told		-17	-12
does dry word		-43
does file far		-23
does file kind part		32	43
does file kind word		23
does fill 		-14
does fill far+here		-19	104
does fill far+phrase		64	-17
does fill fixture			-22
does fill here			-17
does fill kind area		-23
does fill kind defect		42	16
does fill kind fixture		-45
does fill kind material		52	31
does fill kind part		-61	-18
does fill kind size			51
does fill kind surface		88	40
does fill kind verbish		17
does fill kind word		-18
does fill material			-20
does fill pair		46	-21
does fill part			-33
does fill phrase			-43
does fill size			66
does fill surface		96	34
does fill told			38
does fill word			-14
does find 		48
does find far		-26
does find far+phrase		-41
does find kind fixture		-12
does find kind material		41
does find kind surface		-79
does find kind word		-62
does find material		-36
does find part		-22
does find phrase		-16
does find told		63
does find word		-22
does finish 		34
does finish far+here		20
does finish far+phrase		-52
does finish fixture			15
does finish here		51	-44
does finish kind area		33
does finish kind finish			-39
does finish kind fixture		-22	-17
does finish kind material			-24
does finish kind part			-38
does finish kind size			45
does finish kind surface		39
does finish kind verbish		-14
does finish kind word			-14
does finish material			-29
does finish phrase		23
does finish surface			-20
does finish told		29	-12
does finish word		-32	35
does fit far		62
does fit far+here		45
does fit here			26
does fit kind material		-23	-17
does fit kind part			32
does fit kind word		-26	18
does fix 		-30	-19
does fix far		71	-22
does fix far+here		18	71
does fix far+phrase		20
does fix here		-27	20
does fix kind area			16
does fix kind defect			31
does fix kind material		-26
does fix kind part		23	25
does fix kind surface		-17	63
does fix kind verbish		120
does fix kind word		-15
does fix material			13
does fix pair		-32
does fix phrase			-19
does fix told		-23
does flash far			-43
does flip 			23
does flip far			38
does flip kind defect			-30
does flip told			29
does float far		17
does flush 			36
does flush far		48	-59
does flush far+here			-22
does flush here			31
does flush kind material			-14
does flush kind part			-31
does flush kind surface			21
does flush kind word			21
does flush told		-12
does frame far+here			-25
does frame here			17
does fre far			21
does fre fixture			38
does fre here			39
does fre kind fixture			40
does fre kind word			-16
does fre word			-24
does get 		-23
does get area		-26	-24
does get defect			27
does get far		-23
does get finish			15
does get fixture			-52
does get here		-28
does get kind area		-43
does get kind size		-37
does get kind surface		-33
does get kind tells		-13
does get kind tool		38
does get kind verbish		-18
does get kind word		-13
does get material		24	-48
does get part		34	24
does get phrase		-14
does get size			-12
does get surface			28
does get tells		-16
does get tool		12	-31
does get verbish		-49	-35
does get word		-34
does give 		-15
does give far			-31
does give far+here		-30	-94
does give far+phrase			37
does give here			50
does give kind material		-52	-32
does give kind surface		-29
does give kind word		-27
does give material		-79
does give phrase			21
does give surface		-27
does give word		-69
does glue 		-26
does glue area			-15
does glue defect			21
does glue far		47	13
does glue far+here			35
does glue far+phrase		18
does glue fixture			-27
does glue here		-15
does glue kind defect		-22
does glue kind fixture		54
does glue kind material		38
does glue kind part			21
does glue kind surface		13
does glue kind tool			14
does glue kind verbish		-18	61
does glue kind word		23
does glue material		-41
does glue pair			30
does glue part			20
does glue phrase		-22
does glue told			-13
does glue verbish			85
does glue word			-50
does go 		-12
does go area			15
does go far		-23	-15
does go far+here		-19	-25
does go far+phrase			-12
does go fixture			-17
does go here		-14	-28
does go kind area		-22	-16
does go kind defect		-24
does go kind fixture		-31
does go kind material		-18	-27
does go kind part		19	-24
does go kind size		27
does go kind surface		-29	-22
does go kind tool		-16
does go kind verbish		-30	-32
does go material		-23	15
does go pair		-28	-12
does go part		36
does go size		-21
does go surface			17
does go tool		54
does go verbish		-15	-17
does go word		-19
does grab far		15
does grab far+here		13
does grab here		-15
does grab kind material		40
does grab phrase		-37
does grab told		27
does grind 		-12	21
does grind far		84
does grind far+here			-40
does grind here			43
does grind kind defect			45
does grind kind material		105
does grind kind surface			23
does grind kind word		-45	-51
does grind phrase			37
does grind told		-16	-13
does grout 		47
does grout far		-34
does grout far+here			41
does grout here			26
does grout kind defect		-15
does grout kind material		-66
does grout kind surface		84	91
does grout kind word		24	-13
does grout told		29
does hang 		32
does hang area			29
does hang defect		-29
does hang far		-41
does hang far+here			-16
does hang far+phrase		30	45
does hang here		32	63
does hang kind area		28	27
does hang kind defect		-25
does hang kind finish		-27
does hang kind fixture		101	100
does hang kind material		-51
does hang kind part		27
does hang kind verbish		21	-13
does hang kind word		-33	-18
does hang material		-26
does hang pair		17	-16
does hang surface		-13
does hang told		27	-15
does hang verbish		37
does hang word		-15	-39
does have area		-32	-24
does have fixture		-24	-38
does have material			14
does have part		76	55
does have surface		-21	28
does head 			24
does head here			49
does head phrase			25
does hit 		44
does hit far		-32
does hit far+phrase		-33
does hit kind surface		27
does hit kind word		-61
does hit phrase		-20
does hit told		57
does hold 		-46	16
does hold far		73	-32
does hold far+here		-49	-33
does hold far+phrase			-35
does hold here		-37
does hold kind material		-67	-36
does hold kind part			-25
does hold kind surface		87	-12
does hold kind word		40	-23
does hold phrase		-36	-16
does hold told		-22	32
does hold word			-19
does hook 		18
does hook far		16
does hook kind word		55
does hook told		16
does i'll material		18
does i'll word		-50
does install far		-13	-13
does install here			32
does install kind finish		21
does install kind fixture		-13	37
does install kind part		30	46
does install kind size		-41
does install kind surface		23	-16
does install kind tells			49
does install kind tool		-19
does install kind verbish		29	-15
does install pair		57	26
does keep defect		30
does keep far		-46
does keep far+here		-13
does keep far+phrase		48
does keep here		28
does keep kind defect		50
does keep kind material		-28
does keep kind word		25
does keep material		-33
does keep phrase		35
does keep surface		-18
does keep word		-17
does land far		-16
does land here		18
does lay 		-31	-27
does lay far		-13	72
does lay far+here		38	-63
does lay here			49
does lay kind area			-38
does lay kind material		34	53
does lay kind surface		56	31
does lay kind word		-21	30
does lay material			56
does lay pair			24
does lay phrase		-15	-23
does lay word			-32
does leave area		-27
does leave far		-42	-39
does leave far+here		-34	-26
does leave kind area		-19	-13
does leave kind fixture		-27	-12
does leave kind material		-16	-27
does leave kind part		-18
does leave kind surface		-39
does leave kind tells		-14
does leave kind tool		-17
does leave kind word		-25	-17
does leave material		24
does leave pair		13	20
does leave part		46	-13
does leave phrase			15
does leave surface		-43
does leave told		-13	-17
does leave tool		-36
does let defect		-25
does let material		32
does let surface		-67
does level far			-28
does level far+here			26
does level kind area			26
does level kind defect			-28
does level kind material			-66
does level pair			-102
does lift far			47
does lift kind material			-41
does like word		16
does look area		36
does look defect		-33
does look far		20
does look far+here		31
does look far+phrase		50
does look kind area		33
does look kind defect		-31
does look kind fixture		25
does look kind material		45
does look kind part		76
does look kind surface		17
does look kind tool		48
does look kind word		-46
does look material		-37
does look pair		23
does look part		36
does look surface		96
does look word		-45
does make 		-25	-23
does make defect		29
does make far		-37
does make far+here			34
does make far+phrase		36
does make here		-33	-27
does make kind area		-44
does make kind defect		18
does make kind fixture		52
does make kind material		-43	-35
does make kind part			-44
does make kind size		-16	21
does make kind surface		-14	-14
does make kind verbish		-12
does make kind word		35	66
does make material		20	-39
does make pair		41	-17
does make phrase			-15
does make surface		41
does make told		-19
does make word		-54	95
does measure 		-20	-27
does measure far		21	-14
does measure far+here		-20	34
does measure here		54	-41
does measure kind word		26
does measure phrase			-23
does measure told		-13
does miss 		-22
does miss far		-15
does miss far+phrase		-29
does miss here		-18
does miss kind defect		-39
does miss kind fixture		-20
does miss kind material		40
does miss kind surface		12
does mount here			41
does mount kind part			15
does mount pair			-19
does move 		-14	-14
does move area		38
does move defect		-18
does move far			-36
does move far+here		-17
does move far+phrase		-45	36
does move here		55
does move kind defect		-14
does move kind fixture		-31	-39
does move kind material			-25
does move kind part		31	64
does move kind surface			24
does move kind word		45	17
does move material		-25	-22
does move pair		55	28
does move part		42	49
does move surface		-15
does move told		-18	-19
does move word		19
does nail far		23
does nail far+here			17
does nail here			24
does nail kind area			30
does nail kind material		73
does need area		-45
does need fixture		49
does need material		20
does need part		36
does need size		-16
does need surface		-38
does need tool		-28
does need verbish		-48
does need word		-30
does oil far			-23
does oil here			17
does oil kind area			-13
does oil kind defect			18
does oil told			-16
does open 		-13	-20
does open far		42	37
does open far+phrase		-42	-29
does open here		-21	-14
does open kind area		23	57
does open kind fixture		51
does open kind material		-20	-49
does open kind part		-15	18
does open kind surface		40
does open kind word		-45	-57
does open material		21	-42
does open part		14	24
does open phrase		-13	-23
does open surface		45	-14
does open verbish		-12
does open word		-33	-61
does order 		-28	-16
does order defect		27
does order far+here		-15
does order far+phrase		20
does order fixture		37
does order kind area		-17
does order kind fixture		75
does order kind material		-33
does order kind verbish		45
does order material		-29
does order pair		20
does order part		20
does order phrase		-15
does order told		-15
does order word		-23
does owe far		-14
does owe far+here		12
does owe far+phrase		15
does owe here		18
does owe kind material		55
does owe word		-19
does pack far		14	-36
does pack far+here		-14	26
does pack far+phrase			-13
does pack fixture			13
does pack here		36	57
does pack kind material			45
does pack kind part			-29
does pack kind word			28
does pack material			38
does paint 		35	32
does paint far			-26
does paint far+here		51
does paint far+phrase		-25
does paint here			22
does paint kind area		91
does paint kind defect		-52
does paint kind fixture			-34
does paint kind material		-25
does paint kind surface		82
does paint kind verbish		-26	20
does paint kind word		20	20
does paint material		-40
does paint pair			31
does paint phrase			37
does paint told		30
does paint verbish		-34
does paint word		20
does pass 			43
does pass far		-20	-23
does pass far+here			43
does pass far+phrase			-43
does pass here			-15
does pass kind material			-45
does pass kind surface			17
does pass kind word		-15	28
does pass phrase			51
does patch 		-38
does patch far		87	-20
does patch far+here			21
does patch far+phrase			42
does patch here			14
does patch kind area			40
does patch kind defect		53	-12
does patch kind material		33
does patch kind part		-75
does patch kind surface		38	50
does patch kind verbish		-34	-41
does patch kind word			17
does patch material		50
does patch pair			72
does patch part		-80
does patch phrase		-21
does patch surface		22
does patch told		-21
does patch word		-40
does pick far		-17
does pick far+here		19
does pick kind surface		-18
does pick kind word		34
does pick pair		19
does pick phrase		20
does pick word		-36
does pin here			-23
does pin kind defect			19
does plane 		-24
does plane far		55	41
does plane far+phrase		41
does plane fixture		50
does plane kind defect		-17
does plane kind fixture		97
does plane kind material		94
does plane kind word		-93
does plane phrase		-27
does plane surface		17
does plane word		-85
does plug far			49
does plug far+here			-16
does plug here			-48
does plug kind material			-28
does plug kind part			30
does plug kind surface			57
does plug kind word			-33
does plug material			-68
does plug told			-14
does plug word			-49
does pour far		25	-16
does pour far+here			30
does pour here			35
does pour kind material		110	-29
does pour kind surface			75
does pour kind word			14
does prime 		35	-28
does prime area			-23
does prime far+here		-32	-41
does prime here		44	72
does prime kind finish			-26
does prime kind material		29
does prime kind surface		-18
does prime kind verbish		-31
does prime kind word		-14	42
does prime pair			32
does prime phrase		28
does prime told			-32
does prime word		13
does pull 			16
does pull area			-19
does pull far		-33	-45
does pull far+here		-13	-13
does pull far+phrase		67	-14
does pull here			38
does pull kind area		45
does pull kind material		-30	15
does pull kind part		16	-16
does pull kind surface		19
does pull kind tells		30
does pull kind verbish		18	-58
does pull pair		65
does pull part		-15
does pull phrase		16	20
does pull surface		17
does pull told		-26
does pull verbish		-16	-16
does pull word		21	-13
does put 		37
does put area		-73	32
does put defect			-29
does put far		-13	-13
does put far+phrase		-33	17
does put finish		-23	-23
does put fixture		16
does put here			-14
does put kind area			22
does put kind defect		-38	-21
does put kind finish			20
does put kind fixture		74
does put kind material		-26
does put kind size			-16
does put kind surface			-24
does put kind tells		-20	15
does put kind tool		-36
does put kind verbish		15
does put kind word		-43
does put material		-39	-35
does put pair			20
does put phrase			-26
does put size			-15
does put surface		25	16
does put tells			-26
does put told		48	34
does put tool			18
does put verbish		-29	-17
does put word		-37	16
does quote 		-26
does quote far+here		46
does quote here		-33
does quote kind part		14
does quote kind word		35
does quote told		-12
does raise 		-28
does raise far		13
does raise kind word		-36
does raise told		-24
does redo 		36
does redo far		-34
does redo far+here		38
does redo here		38
does redo kind defect		-16
does redo kind part		90
does redo kind surface		-74
does redo kind word		14
does redo material		-15
does redo told		31
does redo word		-15
does rehang 		50	26
does rehang far		22	97
does rehang far+here			20
does rehang here			-48
does rehang kind material			-19
does rehang kind word		-45
does rehang told		29	39
does replace defect			23
does replace far		18	13
does replace far+here			72
does replace fixture			-52
does replace here			-21
does replace kind area		21	-13
does replace kind defect		14	33
does replace kind finish			27
does replace kind fixture		-15	-46
does replace kind material		-14	15
does replace kind part		27
does replace kind size			-31
does replace kind surface		-19	38
does replace kind tells			-27
does replace kind tool			17
does replace kind verbish			42
does replace kind word			63
does replace kind work		-34
does replace pair		-26	30
does replace part			42
does replace told			-13
does reset 		-17	-31
does reset far		60	18
does reset far+here			86
does reset kind defect		21	18
does reset kind fixture			-18
does reset kind material			81
does reset kind part			67
does reset kind word		-46	21
does reset phrase			-17
does reset told			-19
does return far+phrase		40
does return kind fixture		-43
does return kind material		31
does return kind verbish		44
does return kind word		49
does return pair		45
does return phrase		36
does return told		-18
does rip 		30	40
does rip far		17	-23
does rip far+here		-29	-46
does rip far+phrase		-13
does rip fixture		39
does rip here		29
does rip kind fixture		47
does rip kind material		-20
does rip kind surface		-56
does rip kind word		41	-40
does rip material		-25
does rip pair		-13
does rip phrase		65	48
does rip told		-26
does rip word		18
does roll 		-23
does roll far		-17	-35
does roll far+here		-12
does roll far+phrase		18
does roll here		33	28
does roll kind area		13
does roll kind material		34	30
does roll kind word		13
does roll told		-21
does run 		23
does run area			-31
does run defect		17	-39
does run far		-28
does run far+here		-41
does run far+phrase		46	-17
does run fixture			34
does run here			-19
does run kind area		-31	-25
does run kind defect		15	-28
does run kind finish			21
does run kind fixture		37	28
does run kind size			-19
does run kind surface		25	13
does run kind tool			35
does run kind verbish		-46	-29
does run kind word		-30	-26
does run material		27	17
does run part			-17
does run phrase		37
does run surface		34
does run told		-23	30
does run verbish			-30
does run word			-26
does sand 		-22
does sand defect		13
does sand far		65	26
does sand far+here		51	-26
does sand far+phrase		-21	-23
does sand here		-29	17
does sand kind area			36
does sand kind defect		27
does sand kind finish			16
does sand kind fixture		13
does sand kind material		-20	-27
does sand kind part		72
does sand kind surface		-24
does sand kind verbish			-18
does sand kind word		39	17
does sand pair		-22	90
does sand part		26
does sand phrase		-22	-12
does sand surface		-57
does sand verbish		12
does sand word		49	13
does say area		14
does say defect		42
does say fixture		-28
does say material		-27
does say part		22
does say surface		-19
does say verbish		-26
does scrape 		51
does scrape defect			-29
does scrape far		28	36
does scrape far+here		24	-22
does scrape here		35	71
does scrape kind defect			14
does scrape kind material			78
does scrape kind surface			-31
does scrape kind word		-29
does scrape material			68
does scrape surface			-38
does scrape told			18
does scrape word		-54	18
does screw 		-28	-16
does screw far		29
does screw far+here		45
does screw far+phrase			-15
does screw here			-35
does screw kind area			-17
does screw kind defect			-25
does screw kind fixture		57	-50
does screw kind material		16	18
does screw kind part			-45
does screw kind verbish			35
does screw kind word			-32
does screw material			54
does screw pair			-31
does screw phrase			-18
does screw surface			-14
does screw told		-16
does screw word			-29
does scribe far		-27
does scribe far+here		13
does scribe far+phrase		31
does scribe here		36	47
does scribe kind area		-19
does scribe kind fixture			47
does scribe kind material		22	74
does scribe kind part			-29
does scribe kind size		41
does scribe kind surface		30	-14
does scribe material			83
does scribe pair			35
does scribe phrase		17
does scribe surface			-27
does scribe told		-17	-18
does seal 		48	-35
does seal defect			-13
does seal far			53
does seal far+here			25
does seal far+phrase			-15
does seal here		-18	48
does seal kind area			97
does seal kind fixture		-13
does seal kind material		-16	-72
does seal kind part			25
does seal kind surface		59	85
does seal kind verbish		20
does seal kind word		-61	21
does seal material			-39
does seal pair			-20
does seal phrase		25	-23
does seal surface			36
does seal told		31	-22
does seal word			-38
does see defect		-47
does see far+here		47
does see far+phrase		42
does see here		-17
does see kind area		-42
does see kind defect		36
does see kind fixture		-65
does see kind part		15
does see kind surface		34
does see kind verbish		-31
does see kind word		-39
does see material		-27
does see pair		-49
does see part		53
does see phrase		22
does see surface		48
does see word		-41
does send 			-19
does send defect		-36
does send far		47
does send far+phrase		122
does send here			40
does send kind area		-17
does send kind fixture		25
does send kind part		74
does send kind size		-20
does send kind tool		-16
does send kind word		80
does send pair		28
does send phrase		14	39
does send surface		-114
does send word		77
does set 		-15
does set defect		-34
does set far		-19
does set far+here			-13
does set far+phrase			48
does set here			54
does set kind defect			-32
does set kind fixture		32
does set kind material		73	46
does set kind part		-41	42
does set kind surface		-49	-19
does set kind tool			14
does set kind word		-37	30
does set material		57
does set pair		-15	15
does set part		-68
does set surface		-27
does set told		-13
does set word		48	-24
does shave 		-47
does shave far		54
does shave told		-14
does shift 		21
does shift far		18
does shift told		-21
does shim 		-16	-14
does shim defect		-21	-17
does shim far		-24	-22
does shim far+here			46
does shim far+phrase			49
does shim fixture			16
does shim here		26	-14
does shim kind defect		-20	-18
does shim kind fixture		17	25
does shim kind material		53	18
does shim kind part			39
does shim kind surface		14
does shim kind word		44	18
does shim material		44
does shim part			33
does shim phrase			-13
does shim told		-18
does shim word		33	19
does show far+here		-42
does show kind fixture		-16
does show kind material		-27
does show kind verbish		24
does show kind word		-38
does show pair		-13
does show phrase		22
does shut 			29
does shut far			37
does shut far+here			-17
does shut kind part			63
does shut kind word			-15
does shut part			53
does shut told			30
does shut word			-48
does sister 			22
does sister far		44	47
does sister far+here		-29	-18
does sister here		26
does sister kind material		71	48
does sister material			-22
does sister told			24
does sister word			-19
does sit far		-15
does sit far+here		-58
does sit far+phrase		-13
does sit here		13
does sit kind area		-18
does sit kind fixture		-27
does sit kind part		-19
does sit kind surface		19
does sit kind word		-22
does sit material		-24
does skim 		19
does skim far		68
does skim kind material		22
does skim kind surface		27
does skim kind word		37
does snug 			-14
does snug defect			-14
does snug far			31
does snug kind fixture			-26
does snug kind material			78
does snug kind word			-18
does snug material			72
does snug word			-26
does spray 			-14
does spray far+here			51
does spray far+phrase			18
does spray here			-27
does spray kind area			-29
does spray kind fixture			15
does spray kind word			22
does spray pair			20
does start 		-18
does start far		35
does start far+here		-37
does start here		65
does start kind area		57
does start kind defect		-20
does start kind fixture		149
does start kind part		-40
does start kind surface		34
does start kind tells		-14
does start kind verbish		-19
does start kind word		-40
does start material		-27
does start pair		-17
does start part		-52
does start surface		21
does start told		-14
does stay 		-25
does stay far+here		-13
does stay here		-16
does stay kind material		-32
does stay kind verbish		27
does stay kind word		-45
does stay phrase		-16
does stick 		-42	-16
does stick far			17
does stick far+here		-68	-22
does stick far+phrase		-23	-57
does stick here		18	17
does stick kind defect			-45
does stick kind material		26	19
does stick kind part			-36
does stick kind surface		-24	-13
does stick kind word		-31	-40
does stick told		-42	-13
does stop far			-43
does stop here			38
does stop kind verbish		-31
does stop kind word		-21
does straighten far			51
does strip 			72
does strip far		-18	-34
does strip far+here		-13	-16
does strip far+phrase			-31
does strip here		30	-37
does strip kind defect		-18
does strip kind surface			-14
does strip kind verbish		-33
does strip kind word		14	-62
does strip material			-21
does strip pair			42
does stuff far		-53
does swap 		-27	30
does swap area		18	-31
does swap defect			-27
does swap far		29
does swap far+here		31	-19
does swap far+phrase			-40
does swap fixture			-46
does swap here			38
does swap kind area		16	-20
does swap kind defect		20
does swap kind finish		-17
does swap kind fixture			-46
does swap kind material		25	44
does swap kind part		70	51
does swap kind surface			-19
does swap kind verbish		-16
does swap kind word			-17
does swap material		24	40
does swap pair		71	33
does swap part		55	15
does swap phrase		-13
does swap surface		-22	-23
does swap told		-19	42
does swap verbish		-17	20
does swap word			-27
does swing far+here		-17
does swing kind word		-49
does take defect		-59	-16
does take far+here		23	-28
does take far+phrase		77	43
does take fixture			56
does take here		21
does take kind defect		-21
does take kind fixture		54	-27
does take kind material			26
does take kind part		13	26
does take kind size		-22
does take kind surface		-28	-55
does take kind tells		37	-16
does take kind tool		89	-50
does take kind verbish			-16
does take kind word			-19
does take material		-27	56
does take pair		-18	-44
does take part		31	20
does take phrase		-39
does take surface		-29	-44
does take verbish		14	-18
does take word		104	-17
does tape 		-21
does tape defect			15
does tape far		31
does tape far+here			-17
does tape far+phrase			-14
does tape here		-29
does tape kind defect			28
does tape kind material		-15	-28
does tape kind part			-61
does tape kind surface			16
does tape kind verbish			42
does tape kind word			15
does tape material			-23
does tape pair			64
does tape part			-66
does tape phrase			14
does tape surface			20
does tape told		-22
does tape word			26
does tear far			-23
does tear kind word			-15
does tell 			58
does tell far		-22	-55
does tell far+here		-17
does tell far+phrase		17
does tell kind fixture		-13
does tell kind material		-23
does tell kind surface		38
does tell kind verbish		24
does tell kind word		-14	-36
does tell pair		24
does tell phrase		36	83
does tell surface		-17
does tell told		-29
does tell word		75	-35
does test 			26
does test far			-12
does test far+here		36
does test far+phrase		19	-39
does test here		18	84
does test kind defect			38
does test kind fixture			-29
does test kind material		44	-25
does test kind part			-26
does test kind surface			12
does test kind verbish			29
does test kind word		-32	58
does test phrase			-23
does test told			55
does tie far			45
does tie far+here			-20
does tie here			24
does tie kind part			-18
does tie kind word			-40
does tighten 			-19
does tighten defect			-14
does tighten here			42
does tighten kind part			29
does tighten kind word			21
does tighten pair			26
does tighten told			-22
does tile 		49
does tile far		-22
does tile kind material		-52
does tile told		16
does top 		-19
does top far		13
does top far+here		-15	-23
does top here			14
does top kind area			33
does top kind fixture		-13
does top kind material		-27	-18
does top kind surface		25
does top kind verbish		-33
does top kind word		41
does top pair			-44
does top told		-21	21
does touch here		16
does touch kind area		-37
does touch kind material		41
does touch kind surface		34
does touch kind tool		-31
does touch kind verbish		-18
does trim defect		-57
does trim far		-12
does trim here			21
does trim kind area			14
does trim kind defect		-53
does trim kind fixture			14
does trim material		21
does trim told		-29
does trim word		15
does try 		-39
does try far		-20
does try kind word		56
does try told		-26
does turn 		21	-15
does turn area			-33
does turn far		-34	-24
does turn far+here		62	54
does turn far+phrase		22
does turn kind area			-29
does turn kind material		-24	35
does turn kind part		56	31
does turn kind verbish			15
does turn kind word		51
does turn material			36
does turn part			16
does turn told		27	-21
does use 		-13	-55
does use far		-26
does use far+here		53	-29
does use far+phrase		43
does use here			-12
does use kind fixture			58
does use kind material			25
does use kind word			-23
does use phrase			-49
does use told		-24
does wait defect		-37
does wait material		15
does walk 		35
does walk far		-24
does walk far+here		-50
does walk here		62
does walk kind material		-36
does walk kind surface		30
does walk kind word		-26
does walk material		-81
does walk phrase		-13
does walk surface		39
does walk told		42
does walk word		-57
does want area		-43
does want defect		-31
does want finish		-23
does want fixture		13
does want material		17
does want part		-30
does want size		26
does want surface		41
does want tool		13
does want verbish		-48
does wash far			-27
does wash far+here			72
does wash here			-47
does wash kind surface			27
does wire here			50
does work far			-22
does work far+here			-15
does work kind part			-21
does work kind verbish			15
does work kind word			-22
does wrap far+here			15
does wrap kind verbish			-13
does wrap kind word			27
does wrap pair			13
ends CONJ		-35
ends DET		-17	-22
ends NEG		-41
ends Nclock		-22
ends Nidiom		-14	71
ends Nlabel	-16	78
ends OPR		53
ends PREP	-31	-36
ends PRON			-20
ends Q0	-39		-14
ends Qcount		-35
ends Qlength		-65	-59
ends Qother			28
ends Qpack		26
ends Qtime			-67
ends SUB		-32
ends Vmeasureb	16
ends Vmeasurei	-27	-36	-32
ends Vmeasures		-20
ends Vmoveb		-20
ends Vmovei	25	-43
ends Vmovep		-28
ends Vmoves		16
ends Vneedb			-12
ends Vneeds	-28	-20	-16
ends Votherb	12
ends Votheri		-51
ends Votherp		-13	-14
ends Votherpp	48	-34
ends Vreturnb	17	-14
ends Vsayb	-63
ends Vsaypp		-51
ends Vseeb	-36	-20
ends Vworkb		17
ends Vworkbp	18	37	-13
ends Vworkbpp	13	16	46
ends Vworks	19	-22	-12
ends plain		15
ends tarea's	28	-14	-17
ends tdefect	-18	-14
ends tdefect's	-17	23	26
ends tdefectVotherb	-22	25	-17
ends tdefectVotherbpp	-46
ends tdefectVotheri	-13	-22	-18
ends tdefectVotherp		-25
ends tdefectVotherpp	-15	-20
ends tdefectVothers	-17
ends tdefectVworkbpp		34	60
ends tdefectVworki			15
ends tdefectVworkp		-19
ends tdefectVworkpp	-13	-19	-15
ends tdefectVworks	-13
ends tfinish		-16	-15
ends tfinishVworkb	-55	-21	-15
ends tfinishVworkpp	-15	-18	28
ends tfixture	16	23	21
ends tfixture's	43
ends tfixtureVworkb	17		17
ends tfixtureVworks		46	49
ends tmaterial	14
ends tmaterial's	39
ends tmaterialVotherb		20
ends tmaterialVotherpp	-13
ends tmaterialVworki	44
ends tmaterialVworks			-15
ends tpart	18	17	14
ends tpart's		34
ends tpartVotherb	19	-22
ends tpartVothers		-20
ends tpartVworkb		23
ends tpartVworki	-57
ends tpartVworks	33		17
ends trole		64	100
ends tsurface		18
ends tsurface's	36		-24
ends tsurfaceVotherb	-13	-13	13
ends tsurfaceVothers		-38
ends tsurfaceVworkb		-22
ends tsurfaceVworki			13
ends ttool's	34	43	13
ends ttoolVworkb		-36	-24
ends ttoolVworks	-40	-54	20
ends twork		-17
ends verb	-16
ends w	-12
ends w's		-22
ends wed	-19
ends wly		-51
far after 0			21
far after 1	17	21	28
far after 13+	-20	-23
far after 5-7	-26		-19
far after 8-12	-14	-14	-21
far before 0	16	35	20
far before 1		-17
far before 3-4	16	14	15
figure-between	35
flawed			24
frame copula +1	-18		-15
frame copula -1			-20
frame copula -2		-15
frame copula -3		-30
frame copula area		26
frame copula defect		-45
frame copula finish		-18	-18
frame copula fixture		20	22
frame copula here-before	26		19
frame copula surface			-14
frame copula tool		-14	-35
frame copula word		-22
frame copula work		26	-13
frame imperative +1		-15	-32
frame imperative -1	83	15	77
frame imperative -2	-29
frame imperative -3			-22
frame imperative -4	-56
frame imperative area		-17	26
frame imperative defect		-16	-32
frame imperative finish			21
frame imperative fixture		25	15
frame imperative here-after			-24
frame imperative here-before	-18	-16
frame imperative material			43
frame imperative part		16	-24
frame imperative size		14
frame imperative surface			-45
frame imperative tells		-33
frame imperative tool		-19	28
frame imperative verbish			53
frame imperative word			-37
frame imperative work		-29
frame modal -1			-18
frame modal -2			-30
frame modal -3	69
frame modal -4	-30
frame modal defect		-26
frame modal finish		-23
frame modal fixture		-21
frame modal here-after	-41		73
frame modal here-before		27
frame modal material			22
frame modal part		55
frame modal size		-22
frame modal surface		26	18
frame modal verbish		-28	-47
frame modal word		-16	19
frame modal work		-67
frame none +1	-29		-16
frame none -1		39
frame none -2	12
frame none -4		-15
frame none finish		-15
frame none fixture		35
frame none here-after			22
frame none here-before	18		-37
frame none material		23
frame none part			14
frame none size			-18
frame none tells		33
frame none tool			-30
frame none verbish		-27
frame none work		31	34
frame owed +1	32	-36
frame owed -1	-15
frame owed -2	-28	24	-29
frame owed -3	-46	13
frame owed -4	-21		-19
frame owed area		32
frame owed defect		-14
frame owed finish		-22
frame owed fixture		13	20
frame owed here-after	31	31	53
frame owed here-before	30
frame owed material		25
frame owed size		-30
frame owed tells		-22
frame owed verbish		13
frame owed work		-24
frame past +1			-15
frame past -1		38	24
frame past -2		-41
frame past -3		17
frame past -4		13	-18
frame past area		-38
frame past defect		20
frame past finish		-17
frame past fixture			15
frame past here-after		-37
frame past here-before		30	29
frame past part		21	19
frame past size			15
frame past surface		51
frame past tells		-44
frame past tool		-38
frame past verbish		-26	-18
frame past word			-13
frame present +1	-19	-20
frame present -1	17		15
frame present -2		21	-18
frame present -3		13	-15
frame present -4	20	-25	19
frame present area		-21	17
frame present defect		15
frame present fixture		35
frame present here-after	-30	20	12
frame present here-before	22	14
frame present part		23	18
frame present size			27
frame present tells		-18	21
frame present word		-22	-24
head 2 x	-20	-53	-70
head adhesive	31	-43
head aerator	44
head air	-22	-34	-14
head alone	-23	-27
head altogether	-20
head anchors		-19
head anybody		-32
head anyhow	-34	-30
head anyone		-39
head anything		-52
head anywhere	-13
head apartment	-34
head arvo		-35
head aside	-28	-50
head attic			19
head b	-36	-13
head back door	-22	-45	-36
head back wall	83		-40
head backsplash		20	25
head backwards	-13	-21	-22
head bad	-26	-47	16
head bag	-41	-20
head ballast	-88
head balusters	67	48	48
head bar		-36	41
head base		15	-35
head baseboard	40	22
head basement	29		-37
head basin	14
head bath			41
head bath fan	16
head bathroom	15	12	76
head batt	17
head battery	-33	38
head batts			63
head bay	-31	-31	-17
head bays			-65
head bead			-48
head beam	54	-33	-20
head bed		19	-26
head bedroom		34	18
head bedroom 1	-18
head bedroom 2	-48	-19	-64
head bedrooms	-41	-21
head belt	-45
head bench	48	20
head bent		-13
head better		-55
head bifold	64
head big	-50	16
head bit	-50	-63
head black		16	15
head blade	43	49	-37
head bled	-36
head blinds	114		101
head block	72		30
head blocking		-44	21
head blue	-43
head blue tape	-31
head board	41	51	21
head boards	122	60	79
head bolt	83		30
head bolted			36
head bolts			27
head bonding primer		-12
head book		-23
head booked		-53
head boot	18
head bottom rail	21
head bowed			-32
head bowl	13	-43
head box	-25	-18	-12
head boxes	16
head boy	-13	-42
head br	-33
head bracket			38
head brackets	28	33	45
head brass	19	26	-43
head breaker	-20	38	30
head brick		33	-57
head broke	40	-18
head broken	-18		-26
head brown		34
head bucket	-52	-32	-45
head bulb	-27
head c	15		-24
head cabinet	28		31
head cabinets		118
head cable	25	-51	66
head came off	-14	-19	-15
head camera	-29
head cap	-31	60	39
head card	-20	-28
head carpet	-50	-20
head carpet's			-21
head cartridge	-18	56	28
head case	14		12
head casing	-22	88
head cat	-32		-13
head caulk	-31		-29
head ceiling	78	26
head ceiling's	-17	-44
head cement		48
head center	-20		-20
head chain	21		-51
head chase		27
head chimney		45	14
head chip		15	19
head chirps		20
head chunk			12
head church		-20
head circuit		-17	56
head clamp	-20		-18
head clamps	-36		28
head clear	-55	-21	-14
head cleats		-30
head clips	32	17	-23
head closer			31
head closet	16		28
head closet rod	28
head co		-21
head coat	16	32
head cock		-49
head code	-19
head cold	-33	-12
head color			-63
head column	114
head coming	-13	-40
head coming off		-59
head concrete	28
head copper	-15		-21
head cord	-64	-45	25
head corner	-63	-51	-53
head corners		59
head cornice	38
head corridor	-42	-32
head counter			-28
head course	-40
head cove base	25
head cover	52		-55
head crack	-35	82
head cracked	-19	-27	-51
head crawl	-13		-45
head crooked	-13		12
head crown		21
head crown in		86
head crown's			-24
head ctr			34
head curb	16	-52
head cut	26	41	64
head cut out	-61
head cutout		60
head dale		-28
head damp		54
head damper	-21	47
head dave		-58
head dead	-14		-13
head deadbolt	16
head deck	-34	-15	14
head delivery		13
head den		31	-47
head dime	-12	-12
head ding		-17
head dining room	-23		-24
head dishwasher	29	-44
head disp	24
head disposal			16
head dog	-33
head door		-13
head door closer	50
head door's	-44	-101	-28
head doors	100	89
head double	-14
head dowel	-27
head downspout	29	-13
head draft	-30
head drain	-14	21	52
head drain line	-14
head drains	100		68
head drawer		-57	29
head drawer front	102	27
head drawers	-41	28
head drawing	-34	-34
head drill	-13
head drip	-43	20	-49
head drip edge	34
head dripping			-12
head drips	-17
head drop	28	60
head drops	42		-26
head drum	32
head dry	-37	-20	-18
head dryer	-37	-29	18
head dryer vent	46		20
head drywall	66	50	-14
head duct	-39	-33	111
head due		23
head dumpster		-22
head duplex	-20
head earliest		48
head edge	-32	33	49
head edges	-21		13
head eighth		-20
head either	-27
head elbow	-21
head electric		12
head electrical		26
head else		-49
head enamel		-64
head end		-22
head end panel		-35	15
head ends		-24	-40
head entry	14	55
head epoxy	-44	18
head everywhere		-43
head except	-24	-65
head extension		-19
head extra			-23
head face		-22
head factory	-41	-16
head fall	-16	-36	18
head falls	70	-28
head family room			-15
head fan	33	-28	41
head far		-43	-48
head fascia	72	-27
head faucet	-63	20	15
head fault		15
head fell	22
head fella	-40	-13
head felt	-13
head fence	83	-68	-27
head fifth		-14
head filler	-38	16	60
head filter			37
head filters	-24		44
head finger	-26	-17
head finish		-43
head fire	-20	56
head fireplace	34	36
head first		-23	39
head first coat	-25	39	66
head flange	70	82	-24
head flashing	-74	-34
head flex		-34	109
head float	73
head flood test		40
head floor			17
head floor drain			19
head floor guide	-39
head floor's	69	38
head flue	87
head foam	-40	-40	-19
head footing	38	30
head footings			20
head fourth	-26
head framing	-29
head free	-13		31
head fridge	-59
head front	-32	21	24
head front door	52	53	-24
head full		18
head furnace	16		-46
head furniture		39
head gable	-65
head gap	-13		13
head gaps		-39
head garage	-33	-41	-13
head gary	-48	-20	-21
head gas		76
head gasket	-19	13	-50
head gate	75	67	-13
head gauge	-28
head get		-12
head gfci	-27	57	-18
head gfi	-32
head glass		31
head glue	-61	-12	-27
head go	-35		-30
head god	-36	-35	-33
head goes	-25
head going	26	-43
head gone	-13	-21	18
head gravel	-12		40
head gray	-31	-31
head grease	-30
head green			-13
head grid	-42	-21
head grille	57	-29
head grout	18		-16
head guard	-12
head guest room	74		-29
head guide	37
head guillotine	-15
head gutter	39
head gutters	90
head hair	-30	-28
head halfway	-22
head hall	26		14
head hall bath		-34	25
head hall closet		-50
head hallway	92	171
head hand	-17	-61	-40
head handle	-61	-42
head handrail	-25	25	-23
head handrail bracket	68	88
head hangers			19
head hanging	23	26
head happy		-19
head hard			-18
head hardwood		31
head hatch	75		17
head head	50	-15	-21
head header	-30	59
head hearth	41		-14
head heat	-29	-73
head heater	55	34
head height			34
head hendersons	-12
head herringbone			64
head hinge	-54	23
head hinges	-15
head holding	-23
head hole	-15	14	14
head hole's	-18
head holes	-60		88
head hollow	-13
head home		-43
head hood	-43	37
head hook	-47	-19
head hooks	59
head hose	67	16	60
head hose bib	-24	-29
head hot	63	28	20
head hot side	-43
head house	-13	-25	-28
head humidity		-14
head hung	-15	33	-51
head inside	-31		-26
head inspection		-50
head instead	41	12
head insulation	-23	-23	33
head island	58	60
head jack	-21	38
head jamb	-16		-23
head job	-21	-30	-27
head joint	-15		-14
head joints		-19	59
head joists	43		23
head keeper	-17
head key	-74	-57	-17
head keys	29	25
head kit	52	32
head kitchen	13		-19
head kitchen faucet	-23		-39
head kitchen island	40
head knobs	45
head ladder	15	-24	27
head lads		-51
head lags	48
head lamp		-68
head landing	88		21
head latch	15		15
head laundry	67	107	55
head lav	21		-15
head layers	42		23
head lead			62
head leaf	-32
head leak	-31
head leaking		-19	-20
head lean	16	-62
head ledger	35		23
head left end	17
head leg		24
head legs	16		-28
head length	-14
head let go	-15		-42
head level	-38	-25	-22
head lid	55
head lift	-33	-38	36
head light	-55	-27	-36
head light's		79
head lights	39	12
head line	49	-48	64
head linen closet			18
head lines			37
head lint	-49
head lip		-25	-35
head lippage	-47
head list			34
head little		-18
head living room	27	26	-40
head load	-32		-17
head lock	46	-36
head loft	-23
head long wall		33
head longer	21
head loop	18		61
head loose			-17
head luis		-20
head lunch		-47	-61
head m		-37
head machine		-26	-66
head main	60		32
head make	31	25
head manny		-22
head mantel	24	-20
head marble	116		-28
head marco		-42
head master bath			-28
head mastic		-24	-61
head me	-15	-22
head membrane		23
head mesh	-30	-15	-80
head meter	-38	46
head middle	-40	-24	-32
head mind	-13	-32
head mine		-39
head mirror		15	20
head mirror's		-18
head missing	-14	-25	-12
head miter	36	58
head mixing valve	14
head mold	50	71
head mortar	-13	-46	-59
head mud	-64	-63	24
head mudroom	26
head myself	16	-16	23
head nail	43	-51	29
head nails		-29
head needs	-16
head neutral	72
head newel	61	37
head nice	-22		-69
head niche	21		87
head nickel		-20
head nipple	30
head north side	-51
head nos	-19		-24
head nosing	-27	18	49
head not straight		-16
head nowhere	16
head number	-70	-35	-36
head nursery		84	49
head nut	52		34
head o	-20		-17
head oak		29	56
head office		-13	-26
head oil		-37
head open	42	65	-16
head opened up	-15
head opening	-50		-21
head opening's	-26
head oscar		-97
head ours	-13	-24
head out of line	27
head outlet	44	33	48
head outlets		29	-17
head outside		51
head oven			-43
head overhang		31
head pad	32	-20	-16
head paint	-63	40
head pan	91	-22	59
head panel	34	66	18
head panels	24	38	50
head pantry	16	19
head part	-15	49	13
head patch	36	63	21
head peel	-29	-41
head people	-22	44
head permit		13
head piece		41
head pieces		41
head pins		-19
head pipe	43		-20
head pipes	22
head place			-50
head plank		26	29
head planks		106
head plaster		44	-21
head plastic	-42	-13	-52
head plate		-19	-17
head plate's	29	-17
head plates	45	38	25
head plinth	29	-13
head plug	-12	49	51
head plugs		-38
head ply	-24		15
head plywood		52	24
head poly		-90
head porch		-43	-28
head post	-38	-24	-37
head posts	50	56	29
head powder room		44	-16
head pressure			34
head primed	-14	-17	37
head primer	-42	-86	-88
head problem		-18
head profile	-14
head proud		-35	44
head proud of	-14
head pull		-37	-24
head pulls		51	34
head pump	84		-40
head punch	-14		-23
head punky		-25
head put		16
head pvc			13
head quick		-24
head quiet			-25
head quit	-46
head r	-43	-20	-27
head rack	-69	-39	-15
head radiator		-15	65
head rail	39	23	21
head rail's		37
head rails	-23
head rain	-48	-47
head range			-43
head ray		-47
head re		-36
head real	-20	18
head rear	44
head red		-13	-27
head reducer		46
head register	-23	-17	-46
head relief valve	-59
head rental			-24
head return	17
head reveal		-16	-32
head ridge		38
head rigid		29
head ring			43
head rise	-36	15	-17
head riser	16
head risers	-19	-33
head rm	78	49	-23
head rock	-23	-39
head rocking	-23
head rocks		-44	-17
head rod	-31	32
head roll	29	-37
head rollers	-36
head roof		44	-14
head room	-15
head roots	-55
head rotten		23	-16
head round	-33
head row	-16	27
head rtu	-50
head rubber		36
head run	18	-25
head rung		-12
head runner		57
head runs			13
head rust	-15		-18
head rusted through	-21
head s	-50		-51
head sagging	-14
head salon	-81
head same		-29
head sample		39
head sand	-56	40	-36
head sash	17	-36	-37
head sash cord	50
head satin	-18
head saw	23
head sconces		15
head scrap		14
head scratch	21
head screed	14	19
head screen	50	34	34
head screw	-15		16
head screwdriver		-20
head screws	-35		-50
head scuff	-13
head sealant	-16	-42
head sealer	-14	-49	-62
head seam	66	57	43
head seams		-24	-52
head second coat	-21	-13
head sheathing	110	19	-14
head shed	-53	-36	24
head sheet		-35
head sheets	38		51
head shelf	-22	47	64
head shelves		27	25
head shim		-28
head shims	-28		12
head shop	-34	-40	-37
head shot			-51
head shower		145	51
head shows		-23
head shutoff	16
head side	-63	-49	-30
head sides		-63	-15
head siding	38
head sign		-38
head signs		-17
head silicone			-27
head sill	-24	-20	-21
head sink	-32	-28	-28
head site		-19
head size	-38	-30
head skim	-16	-33	-17
head skirting	85	19
head slab	44	-18
head slate		141
head sleeve	72	25
head slid	35
head slide	58
head slider	-24
head slides	-22
head slip	-42
head slope	47	-12	24
head slopes		15
head slow	48	-14	-48
head smoke	-26		-18
head smoke alarm	13
head snapped			-37
head snug	-14		-43
head sock	-14
head socket	-51
head soffit	-81
head soft		28	37
head soft close	-25
head somewhere	15	29
head soon	28
head sorry	-15
head spare		53	-34
head spec	-38
head spins	33	38
head splash	-37		20
head splice	33
head split		28	60
head spot	-68	47	-61
head spots	-45		-36
head spout	-17		-40
head spring	-73
head stack		-36
head stain	-69	16	62
head stair	-32
head stairs	52	-26	-18
head start		24
head static	22
head stay		22
head steel	21		-28
head step	18	80	50
head steps	77	29
head sticking	-14
head stile		-31
head stock	58	16
head stone	36		17
head stop	-14		47
head store	-20	27
head stove		-27
head straight	-17		-39
head street	77
head strike	14	45	26
head string		-26
head strip			26
head stripped	-18	-23	-14
head strong		-18
head stub			42
head stuck	-19	-29	-41
head stuck open	-14
head stud		33	17
head studs	-40	63
head study		-109
head subfloor	43	71	-15
head sun		-17
head sunroom			-14
head supposed		-37
head sweep	27
head sweet		-12
head switch		-29	-47
head t		23
head tacky	-23	-27
head tank	30
head tap			-14
head tee		-48
head temp	-17		-31
head template	-23	44	21
head test		57
head the wrong		-20	-21
head thermostat	-45		25
head thinset		-35
head threshold	100	76	54
head tile	47	-13	14
head tile's		13
head tiles	79	34	30
head tip			-28
head toe kick		68
head toilet	89	39	36
head toilet flange	63
head toilet seat			21
head too high	-35
head too long	-21	-40
head too short		-28	-45
head top	-30	21
head top pivot	-42
head torn		-20	-36
head total			-23
head touch		15
head track	-30	-29	-32
head trap	15	34	46
head travelers	79
head tray	-29		-18
head tread		37	-23
head treads	106	65	52
head trim	-15	52
head truck	-24		-13
head tub	-65	-21	-20
head tub spout			17
head tub's	-38		17
head tube		19	31
head twice	34		-43
head type		17
head union	-34	-44
head unit	-34	-45
head units		-20
head uppers	-55	-47	28
head upstairs	31	34
head upstand		36
head us	-24	-21
head valve	15	-15	17
head van	-15
head vanity			-20
head vanity top		-33
head vent	-19	40	-47
head vinegar		-67
head vinyl	-14	61
head visit		-15
head wait		57
head walk	-28	-29
head wall	18		-17
head wall bend	-21		-52
head wall's	33	-26
head walls	-50	-36
head walnut		-17
head want		-16
head wants	-27	-24
head washer	-13	-25	-15
head washers		-15
head wasp nest	-27
head waste	69
head water	-47	-67	-36
head water's	-90
head wax	-17		-15
head wax ring	-22	-32	-66
head weatherstrip	82
head weeping			-20
head weight			34
head went		-17
head wet	-13	19	-14
head whenever		-67
head white	-19	-70	-68
head whoever	-29	-15	-20
head wind	-58	14	-18
head window	22		44
head windows			-25
head wire		87	-21
head wires	-64
head wobble		-14	13
head won't close	-23
head won't latch	-27	-14
head wood	-39	-55
head wrong	-51	-63
head you'd	-65
head zone	-15
heading +1		26	-25
heading -1		-44
heading -3	44	-28
heading -4	18
heading here-after	-25	27
heading here-before		-30
join +1	-20	-14	-17
join +1 area	-39		-24
join +1 defect	-17		-13
join +1 finish	-20
join +1 fixture	-12	-23
join +1 material	-16		-19
join +1 part		-27	-23
join +1 size		-20	-21
join +1 surface	-22		-14
join +1 tells	-31		-22
join +1 tool	-21	-36
join +1 verbish	-15	-31	-13
join +1 word		-12
join -1		13
join -1 area	17	-16
join -1 defect	-13	16
join -1 finish		17	-21
join -1 fixture	24	56
join -1 material		-15
join -1 part		48	42
join -1 size	20		46
join -1 surface		34	21
join -1 tells	33	67	50
join -1 tool	44	-34	-30
join -1 verbish			-22
join -1 word	-17
join -1 work		23
join -2 area	13	13	-27
join -2 defect		-17	14
join -2 finish			16
join -2 fixture		31
join -2 material		33	24
join -2 size	19
join -2 surface		-30
join -2 tells	-20	-26	22
join -2 tool	-13	-15	-18
join -2 verbish		15	-16
join -2 word	-16
join -2 work	-14	24	-22
join -3 finish	-18
join -3 fixture			21
join -3 material			-15
join -3 part	19	13	25
join -3 size	-18	-25	-20
join -3 surface		14
join -3 tells	-24	-38
join -3 tool	-25		-13
join -3 word	-12		-20
join -3 work	-13	-16	-22
join area	24
join area+area		42
join area+defect		-23
join area+finish	-14	-51	-17
join area+fixture	13		27
join area+material	26	26	29
join area+part	44	14	-14
join area+size	15	-40
join area+surface	42	-12
join area+tells	-49	47
join area+tool	-31	-24
join area+verbish	-27	55	17
join area+word		-18
join area+work	16
join defect			14
join defect+defect		-20
join defect+finish		-26	33
join defect+fixture		19
join defect+material		-17	-18
join defect+part		32	17
join defect+size		-14	-25
join defect+surface		37
join defect+tells		-18
join defect+tool		-15
join defect+verbish			18
join defect+word		-19	34
join finish		47
join finish+area			20
join finish+defect		-35	50
join finish+finish	-31		-14
join finish+fixture		78
join finish+material	22		-72
join finish+part		-35
join finish+surface	-18	108
join finish+tool	-12
join fixture	-19		-22
join fixture+area		-48	-29
join fixture+defect			-34
join fixture+fixture	20
join fixture+material		14
join fixture+part			-16
join fixture+size	-24	-26	-13
join fixture+surface	-12
join fixture+tells	41	-13	-14
join fixture+tool	-30
join fixture+work	-14		37
join leads 		22
join leads about	-14
join leads above	39
join leads along	-21		23
join leads around	62	26
join leads at	26	37
join leads at word	18
join leads before		-40
join leads behind		13
join leads by	49	49
join leads by term	-46
join leads by term word		19
join leads for	47		27
join leads from	26	-14	-26
join leads in	24		14
join leads in term term	49
join leads in term word		43	22
join leads in word	-50		-27
join leads in word word	-33
join leads mark		25	74
join leads mark number	79
join leads near	55	23
join leads number	43		43
join leads of	24	17	-19
join leads of quantity	-22
join leads of term verb	-29
join leads of term word	-19	53	17
join leads of word word	13
join leads off	99	-23	24
join leads on	21		28
join leads on quantity	48	41
join leads on term verb	27
join leads on word	118
join leads out of		62
join leads over	32	60
join leads over term verb	-12
join leads quantity			-37
join leads quantity at	-50
join leads quantity by quantity	-34
join leads quantity from	-17
join leads quantity of	17	43
join leads quantity of word	-38
join leads quantity on	-54
join leads quantity verb	37
join leads quantity word	54	-33
join leads quantity word quantity	-16
join leads term		86	38
join leads term by	-25
join leads term in	78
join leads term on	26
join leads term word word	-21
join leads time	34
join leads time word		-42
join leads to			34
join leads under	49	21	113
join leads under word word	-62
join leads up		69
join leads up in	51
join leads verb		42	14
join leads verb at		18	41
join leads verb at quantity	-14
join leads verb by	31
join leads verb from	-23
join leads verb in	31	24	-47
join leads verb mark	35
join leads verb of	26
join leads verb on	33	39	55
join leads verb on word	28
join leads verb out	-17
join leads verb out of	-14
join leads verb quantity		29
join leads verb quantity in	34
join leads verb quantity of	-46
join leads verb quantity on	44
join leads verb quantity term	-38	-56
join leads verb quantity verb	-17
join leads verb term	28
join leads verb term in	-30
join leads verb term of	-13
join leads verb term verb	22
join leads verb term word	-25
join leads verb to	-27		53
join leads verb under	61
join leads verb verb		18	13
join leads verb verb at	-17
join leads verb verb in	34
join leads verb verb term	-29
join leads verb verb verb	19
join leads verb verb word	-29
join leads verb with	13		50
join leads verb with verb	-12
join leads verb word	-21	34
join leads verb word on	62
join leads verb word quantity	73
join leads verb word verb	-33	-16	-27
join leads verb word word	43	20
join leads with		-36	-15
join leads with quantity	-26
join leads word		-25
join leads word at	14
join leads word in		25	-20
join leads word on	-19		40
join leads word quantity			-35
join leads word quantity of	-14	-60	-23
join leads word quantity on	-25
join leads word quantity word	-15
join leads word term		-17
join leads word term in	-37
join leads word term verb	-20
join leads word term word	-13
join leads word verb		37	32
join leads word verb at	-35
join leads word verb by	-15
join leads word verb in	-33	25	65
join leads word verb on	52	37	27
join leads word verb quantity	-19	-68
join leads word verb up	30
join leads word verb verb	-19	37
join leads word verb word		-20	32
join leads word with	-16
join leads word word	-19	-36
join leads word word term	17
join leads word word to	35
join leads word word verb	-44	-20	-42
join leads word word word	62		14
join material	-18	13
join material+area		29
join material+defect	-21	34
join material+finish			34
join material+fixture		17
join material+material		20
join material+part	-22	-39	31
join material+size	-21		13
join material+surface			21
join material+tells		-20	22
join material+tool			-29
join material+verbish		-22
join material+word	-13		-23
join part	-24	-29	-37
join part+area	-30	19	-26
join part+defect		-37
join part+material	-17		-15
join part+part			-15
join part+size		-25
join part+surface		-22	-13
join part+tells	-12		-14
join part+tool	-26	-35	-21
join part+verbish	-22		-25
join part+word		-16	-19
join same-before	13		16
join same-before finish	-14	-23	-62
join same-before fixture		-22	15
join same-before material			34
join same-before size	-17	35
join same-before surface			15
join same-before tells		32
join same-before tool	16	61
join same-before verbish		-19
join same-before work		32	12
join size	23
join size 3		20
join size+area		-55	-29
join size+fixture		31	31
join size+material			13
join size+part		-18
join size+size			64
join size+surface	27		-59
join size+tells	57
join size+word	12		-20
join sizes 1+2		15
join sizes 2+3	29	27
join sizes 3+1		22
join sizes 3+3	-13	-26	-19
join surface	19
join surface+area	51		16
join surface+defect		-14
join surface+finish	-29	-45	-60
join surface+fixture	22	37	25
join surface+part			-17
join surface+size		18	-18
join surface+surface			26
join surface+tells	-15	36	-20
join surface+tool	-22	-14	-27
join surface+verbish	22	20
join surface+work		-20
join tells	26	23	36
join tells+area	15	35
join tells+defect		-18	42
join tells+fixture			-42
join tells+material	56	25	-16
join tells+part	-32	48	48
join tells+surface	45
join tells+verbish		-38	-12
join tells+word		16	30
join tool		27
join tool+area	16	26
join tool+finish		44
join tool+fixture	-22		-43
join tool+material	-21	30	29
join tool+part	-14		54
join tool+size	25	51
join tool+surface	15	38
join tool+tool		-34
join tool+verbish	27	32
join tool+word	-16	-39
join verbish+area	26	-37
join verbish+defect			-12
join verbish+finish	-19	-30	-28
join verbish+fixture		-20	-18
join verbish+material	-14		20
join verbish+part	23	18	16
join verbish+size	-19
join verbish+surface		36	-18
join verbish+tells			-23
join verbish+verbish			-15
join verbish+word	-13	-18
join word			14
join word+area			-24
join word+defect		-16
join word+finish	19	24	-22
join word+fixture			34
join word+part	16	38	25
join word+size	18
join word+surface		-15
join word+tells	-37	29	27
join word+tool	54	28
join word+verbish			-24
join word+work	-21	24	-13
join work	33	-76	44
join work+defect		58
join work+fixture		-53
join work+material		-34	-22
join work+word		-65
kind +1 defect		-13
kind +1 finish	-14		-26
kind +1 fixture		-17
kind +1 material	-16		-15
kind +1 part			-19
kind +1 size	-12	13
kind +1 tells	-17		23
kind +1 tool		14
kind +1 verbish	-18	-17	-18
kind +1 word		-15
kind +1 work		-38
kind -1 finish	-26	-44	-25
kind -1 fixture		17	19
kind -1 material	23	23	21
kind -1 part		36	71
kind -1 size	50	24	40
kind -1 surface		19	-19
kind -1 tells	-47		36
kind -1 tool	-21		13
kind -1 verbish			-17
kind -1 work		-33
kind -2 area		19
kind -2 defect		-24
kind -2 finish	20	-26	33
kind -2 fixture	35	27	27
kind -2 material	13	21	22
kind -2 part	28	28
kind -2 size	19
kind -2 surface		-27
kind -2 tells	-25		-27
kind -2 tool	-36	-19
kind -2 verbish	-24		-15
kind -2 work	-29	-12	-21
kind -3 area	-24	-24	-19
kind -3 defect		-12	-14
kind -3 finish	-15	-23
kind -3 fixture		29
kind -3 material	14		13
kind -3 part		18	-16
kind -3 size	-16	-26	-33
kind -3 surface	17	18	-21
kind -3 tells		-35	-16
kind -3 tool	-15	-32
kind -4 area			19
kind -4 defect			-16
kind -4 fixture	19
kind -4 part	-23
kind -4 size	-24	-25
kind -4 surface		17
kind -4 tells	-28		-15
kind -4 tool	29	-26	-29
kind -4 verbish		-23	-12
kind -4 word			-13
kind -4 work	-14	-13	-19
kind defect	-20	-13
kind finish	-14	-14
kind fixture	20	17	15
kind here-after area	41
kind here-after defect	-24	-15
kind here-after finish	-25	35	24
kind here-after fixture		53
kind here-after material	12	24
kind here-after part	42	37	25
kind here-after size	13		14
kind here-after surface		20	25
kind here-after tool	-49		-28
kind here-after verbish	20	-25
kind here-after word	-16	-13
kind here-after work			33
kind here-before area	-13	-55
kind here-before defect	-18
kind here-before finish	-46		-70
kind here-before fixture	29	28	21
kind here-before material	21	18	15
kind here-before part	36		28
kind here-before size	-24		46
kind here-before surface		17	20
kind here-before tells		33	26
kind here-before tool	15	13
kind here-before verbish	-16	25	15
kind here-before word			20
kind here-before work			35
kind material	15
kind part	17	19	14
kind tells	-19
kind word	-13
kind work		-16
lead a -1	24
lead a -2	-18
lead a -3	-46
lead area -1	25
lead area here-after	-27
lead area here-before	28
lead finish here-before	-44
lead fixture -4	16
lead fixture here-after	-22
lead fixture here-before	15
lead in here-after	28
lead in here-before	-28
lead material -1	14
lead material -2	-12
lead material here-after	-33
lead material here-before	20
lead number -1	72
lead number -2	42
lead number -3	-20
lead number -4	-28
lead number here-after	-13
lead number here-before	37
lead on here-after	46
lead on here-before	-43
lead part -4	-13
lead part here-after	-22
lead part here-before	30
lead quantity -1	33
lead quantity -2	-18
lead quantity -4	28
lead quantity here-after	-63
lead quantity here-before	31
lead role -2	-42
lead role -3	-33
lead role -4	-24
lead role here-after	83
lead size -1	-40
lead size -3	18
lead surface -2	26
lead surface -3	-21
lead surface -4	-16
lead surface here-after	-16
lead surface here-before	27
lead tells -2	-17
lead tells -3	65
lead tells -4	-36
lead tells here-after	-32
lead tells here-before	-44
lead that -1	-19
lead that -2	37
lead that -3	-34
lead that -4	38
lead that here-after	-23
lead the -2	-39
lead the -3	-37
lead the -4	-30
lead the here-after	60
lead the here-before	-23
lead tool -1	-28
lead tool here-after	31
lead verbish -1	25
lead verbish -2	35
lead verbish -3	25
lead verbish here-after	-24
lead verbish here-before	22
lead with -1	-19
lead with -2	96
lead with -3	-40
lead with -4	-28
lead with here-after	-43
lead with here-before	25
lead word -1	19
lead word -3	19
lead word here-before	15
led none far		-18	-14
led none far+here	-13
led none here	16
led none none 0 outside 0		17
led none none 0 outside 1		-33	-26
led none none 0 outside 2		-16
led none none 0 outside 3	29		-16
led none none 1 outside 0	28
led none none 1 outside 2	-13
led none none 1 outside 3		-25	-12
led none none 1 outside 4	-16
led none none 2 outside 0	23
led none none 2 outside 1	-13
led none none 2 outside 4	-18
led none none 3 outside 0	20
led none none 3 outside 1	-16
led none none 3 outside 2		-17
led none none 3 outside 4	15
led none points 0 outside 1		-12	-22
led none points 0 outside 2		-24	-15
led none points 0 outside 3		-19
led none points 1 outside 0	-58
led none points 1 outside 1	-12	-20	-21
led none points 1 outside 2	89
led none points 1 outside 3	-48		-15
led none points 1 outside 4		12	-13
led none points 2 outside 0	-28
led none points 2 outside 1	-30
led none points 2 outside 2			-14
led none points 2 outside 3	-29		-13
led none points 2 outside 4			-42
led none points 3 outside 0			-19
led none points 3 outside 1	-33	-24	-15
led none points 3 outside 2			24
led none points 3 outside 3	34
led none points 3 outside 4		39
led turn here			16
led turn none 0 outside 1		52	-22
led turn none 0 outside 2			27
led turn none 0 outside 4		-43	-21
led turn none 1 outside 0		50	35
led turn none 1 outside 1		-18	-18
led turn none 1 outside 2			-14
led turn none 1 outside 3		22	-39
led turn none 1 outside 4		-27	24
led turn none 2 outside 0			16
led turn none 2 outside 1		-25
led turn none 2 outside 2		-18
led turn none 2 outside 3			-22
led turn none 2 outside 4			-17
led turn none 3 outside 0		21
led turn none 3 outside 1		-37
led turn none 3 outside 2		31
led turn none 3 outside 3		-15
led turn pair		12	15
led turn points 0 outside 1		-23	-27
led turn points 0 outside 2			17
led turn points 0 outside 3		37
led turn points 0 outside 4		83	-34
led turn points 1 outside 1		16	18
led turn points 1 outside 2			17
led turn points 1 outside 3			-40
led turn points 1 outside 4		17	59
led turn points 2 outside 0			53
led turn points 2 outside 1			55
led turn points 2 outside 2		-19	-15
led turn points 2 outside 3		-40	22
led turn points 3 outside 1		16
led turn points 3 outside 2		-29
led turn points 3 outside 3		16
led verb far+here		13
led verb here			14
led verb none 0 outside 0		15
led verb none 0 outside 1		33	36
led verb none 0 outside 4		-29
led verb none 1 outside 0		47	41
led verb none 1 outside 1		-13
led verb none 1 outside 4			-31
led verb none 2 outside 0		45	28
led verb none 2 outside 1			-13
led verb none 2 outside 3		-17
led verb none 2 outside 4			24
led verb none 3 outside 1			-25
led verb none 3 outside 2		27	55
led verb none 3 outside 3		-37
led verb none 3 outside 4			-14
led verb pair		23	27
led verb points 0 outside 1		16	-17
led verb points 0 outside 2		17	26
led verb points 0 outside 3		24	29
led verb points 0 outside 4		-29	26
led verb points 1 outside 0			-18
led verb points 1 outside 2		22	22
led verb points 1 outside 3		18	35
led verb points 2 outside 0			-39
led verb points 2 outside 1			-18
led verb points 2 outside 2		25	28
led verb points 2 outside 3		23
led verb points 3 outside 3			14
led verb points 3 outside 4		-14
lemma be object	-24
lemma be subject	33
lemma bend subject	39
lemma come subject	47
lemma crack object	66
lemma crack subject	35
lemma drip object	-23
lemma find object	68
lemma get object	-32
lemma get subject	26
lemma get subject-late	-88
lemma go object	-49
lemma go subject	-73
lemma hang object	-65
lemma hang subject	31
lemma hit object	-77
lemma hit subject	76
lemma hum subject	-26
lemma keep object	-19
lemma keep subject	87
lemma leak object	-20
lemma leave object	62
lemma miss object	14
lemma pull object	-83
lemma pull subject	55
lemma read subject	-30
lemma run object	-46
lemma run subject	73
lemma say subject	-118
lemma send object	-60
lemma show subject	-40
lemma sit object	-66
lemma sit subject	24
lemma snap subject	-30
lemma stick object	-29
lemma strip subject	13
lemma take object	69
lemma trip object	13
lemma trip subject	-28
lemma want object	60
lemma wobble subject	36
number many many		84	66
number many one		-40	-58
number none many		15
opens CONJ		26
opens COP		-58
opens DET		35
opens Nidiom		40
opens OPR		-15
opens PREP	-28	-17	-23
opens PRON		-24	-14
opens Q0		53
opens Qcount		-92	-14
opens Qlength		-39	-36
opens Qpack		14	18
opens Qtime			-23
opens Qweight			-52
opens SUB			-12
opens Ton		21
opens Vmeasurei		-16	-12
opens Vmoveb		-35	-23
opens Vmovep	-44	-20	-54
opens Vmovepp	15		13
opens Vmoves	-19	-35	-16
opens Votherb	-21		-17
opens Votheri	28
opens Votherp			-14
opens Vreturnb		-24	52
opens Vsayb	-12	-24	-15
opens Vsaypp		-52
opens Vseeb	-35	-14
opens Vworkb	-21	-22
opens Vworkbp	-48		-38
opens Vworki			16
opens Vworkpp	-15
opens Vworks	26		38
opens tarea	16	18
opens tarea's	18		-14
opens tdefect	-20	-17	-13
opens tdefect's	-18	23	26
opens tdefectVmeasures	-38
opens tdefectVotherb	-39
opens tdefectVotheri	-16	-19	-25
opens tdefectVotherp	-17	-45
opens tdefectVotherpp	-15	-21
opens tdefectVothers	-17
opens tdefectVworkbpp	-20		13
opens tdefectVworki	-13		15
opens tdefectVworkp			-35
opens tdefectVworkpp		-18	-16
opens tdefectVworks	-14
opens tfinish	-29		-16
opens tfinishVworkb	-20	26
opens tfinishVworkpp	-37
opens tfixture	36	23	19
opens tfixture's	61
opens tfixtureVworkb	-16	34	32
opens tfixtureVworks			54
opens tmaterial	13	13
opens tmaterial's	52		-16
opens tmaterialVotherb	-22	34
opens tmaterialVworki	60	38	34
opens tpart	33	23	27
opens tpart's	22	30
opens tpartVotherb	16
opens tpartVothers			14
opens tpartVworkb		18
opens tpartVworki	-20		40
opens tpartVworks		31
opens trole	-23	-32	-31
opens trole's	-24		-13
opens tsurface		13
opens tsurface's	16	-19	-31
opens tsurfaceVotherb	-35		-18
opens tsurfaceVothers		-22
opens tsurfaceVworki	-20		31
opens tsurfaceVworks		-50	13
opens ttool		-13
opens ttool's	60
opens ttoolVworkb			-58
opens ttoolVworks	-37		29
opens twork			15
opens w	-27	-14
opens w's	-22	-57
opens wed	-21		-16
opens wing	-12
opens wly	-38	-45	-13
opens-with -4	-21
opens-with here-after	32
order before far+here		15	-12
order before here			34
order before pair			33
order behind far+here			24
order behind here			-15
order behind pair		42
outside 0 lacks none 0		18
outside 0 lacks none 1	28	47	33
outside 0 lacks none 2	23	32	19
outside 0 lacks none 3	20	15
outside 0 lacks points 1	-58	-17	-23
outside 0 lacks points 2	-28
outside 1 lacks none 0		13
outside 1 lacks none 1		-21	-22
outside 1 lacks none 2	-13	-17	-21
outside 1 lacks none 3	-16	-18	-28
outside 1 lacks points 0			-41
outside 1 lacks points 1	-12		-12
outside 1 lacks points 2	-30
outside 1 lacks points 3	-33
outside 2 lacks none 1	-13	-16	-22
outside 2 lacks none 2		-13
outside 2 lacks none 3		19	36
outside 2 lacks points 0			13
outside 2 lacks points 1	89		28
outside 2 lacks points 3		-14	21
outside 3 lacks none 0	29		-13
outside 3 lacks none 1		-23	-18
outside 3 lacks none 2		-19
outside 3 lacks none 3		-32
outside 3 lacks points 0		15	20
outside 3 lacks points 1	-48	20
outside 3 lacks points 2	-29
outside 3 lacks points 3	34
outside 4 lacks none 0		-34	-14
outside 4 lacks none 1	-16		-20
outside 4 lacks none 2	-18
outside 4 lacks none 3	15		-20
outside 4 lacks points 0			13
outside 4 lacks points 1		13	16
outside 4 lacks points 3		26
pair by 1	-13
pair by a		-13
pair by about	-19	-44
pair by above		-41
pair by across	21
pair by after	22
pair by again	-22
pair by along	-29	23	73
pair by already	12
pair by an	-63	-38
pair by and	-17
pair by are	18	-13	48
pair by around	49	80	67
pair by as	-21		-25
pair by at		-16
pair by back		-29	33
pair by bad	-54
pair by be		85	-13
pair by been	-22
pair by before		-49
pair by behind	23	-15	60
pair by between	-51
pair by both	21	13	-31
pair by bottom	18
pair by box	85
pair by by			19
pair by came	-19		-25
pair by can	40
pair by clean	-20
pair by come	14	84
pair by cover	-16
pair by deep	-19
pair by don't	-14	-26
pair by done	-25		-12
pair by down	-25	-33	-22
pair by dumps	-27
pair by each	-22
pair by em		18
pair by every	-41	-33
pair by finally	86
pair by first	-21
pair by for	36		27
pair by from		-40	20
pair by front	-24
pair by full	-33
pair by get	-36
pair by glued	-27
pair by go	-38	-14
pair by goes		77
pair by gone	37
pair by got		75
pair by guy	13
pair by had		-31
pair by hanging	-26
pair by hangs	20
pair by has	16	25	53
pair by have	25	-18
pair by her	23	66
pair by high	-29
pair by hold	-22
pair by house	18
pair by hung	22		-23
pair by i			44
pair by in	13	15
pair by inside	-28
pair by into	-27		-49
pair by isn't	-18
pair by it	-36	-58	-27
pair by its	-16		30
pair by landed	36
pair by last	-29
pair by left	38	20
pair by like	-34	-74	-65
pair by low	-53
pair by man	21	12
pair by mark			20
pair by me	42
pair by more		77
pair by move	14
pair by my	36
pair by near	16	30
pair by need	-27	66
pair by needs	84	88
pair by never	-42
pair by next	25
pair by no	-18		-13
pair by not		-19	-20
pair by notched	17
pair by nothing	-31
pair by now	19		-27
pair by number	31	-29	60
pair by of			15
pair by off	19		37
pair by old	18	19	20
pair by on	32	12	38
pair by one's	-37
pair by ones	-34
pair by only	-35	-22
pair by or		-42
pair by out		-23
pair by over		-21	-45
pair by past	-22
pair by place	27
pair by put	-24
pair by quantity		-58	-20
pair by reads	25
pair by right	-23
pair by round	-23
pair by run	-30		32
pair by running	-22
pair by say	33
pair by says			-14
pair by set	-31		44
pair by short	19
pair by shy	-47
pair by since	-13
pair by sit	-66
pair by sits	-18
pair by size	-60
pair by so	-24	-26
pair by some	39
pair by still	24	27
pair by strip	21
pair by tall	-23
pair by term	-15	-28	-22
pair by than	-54
pair by that	28	14	23
pair by the	12		21
pair by their	-40
pair by them	44
pair by then	-17
pair by there	-38	32	37
pair by they	30
pair by thick	-51
pair by those	44
pair by through		-47	41
pair by till	31	-51
pair by time		-19
pair by to		-23	13
pair by too	-39
pair by took	20
pair by top	-15
pair by toward	22
pair by under	18	18	25
pair by up	-23	-21
pair by used	-39
pair by wants	-18	99
pair by was		-61
pair by way	14
pair by we	-31	-28
pair by went	-25	-49	67
pair by were	-19
pair by when		-26
pair by where	-54	20
pair by which	15
pair by whole	-22
pair by will		-20
pair by with		-50	-25
pair by without	-24
pair by won't	-41
pair by x			-34
pair by you	-22	-17
pair false		14	13
pair true		-15
part +1 object	-18		-13
part +1 opens			-18
part +1 subject	-12	-17
part +1 subject-late		-43	-15
part -1 bare			-26
part -1 opens	13	16	18
part -1 subject	26	25	33
part -1 subject-late	-15		-12
part -2 bare			-17
part -2 object			-14
part -2 opens	13		14
part -2 subject		16	17
part -2 subject-late	20	28	23
part -3 bare	-20
part -3 object		-15	-21
part -3 subject		15
part -3 subject-late	17	38	34
part -4 object			-15
part -4 subject			-16
part -4 subject-late	-27		18
part bare	-14
part bare area	-15	28
part bare defect	-26	-17	-25
part bare finish	28
part bare material			-26
part bare size		-12
part bare surface		-15
part bare tells	71	19
part bare tool	-30		-50
part bare verbish	17	-12	17
part bare word	-14
part bare work	24	-19
part here-after bare	-17
part here-after object	-15
part here-after opens	45		24
part here-after subject	69	23	17
part here-after subject-late		81	-25
part here-before bare		14	21
part here-before object	-42	13	29
part here-before opens	23		-52
part here-before subject	21		24
part here-before subject-late		36
part object	-23		-17
part object defect	-16
part object finish	-17		-15
part object fixture	14		18
part object part	17	18
part object surface	-13
part object tells	-37
part object tool	-16
part object verbish	-17	-15	-20
part object word	-16		-16
part object work	-14	-50
part opens	20	13
part opens defect		-17
part opens finish	-25	-55
part opens fixture	29	17
part opens material	20		23
part opens part	13	19	24
part opens size	21		-16
part opens surface	24	37
part opens tells		-26
part opens tool			-37
part opens verbish		16
part opens work		30	16
part subject	18		15
part subject area	16		-15
part subject defect	-42	-28
part subject finish	-31	-44	-12
part subject fixture	28	24	25
part subject material	22	15
part subject part	16		12
part subject size	-12		29
part subject surface	13		12
part subject tells	-16	-27
part subject tool	28		15
part subject work	-32
part subject-late area	-22
part subject-late defect	36	15
part subject-late finish	-22		20
part subject-late fixture	-18	24	-21
part subject-late material	14	22	51
part subject-late part	-14	24
part subject-late size	36		-15
part subject-late surface	42		-20
part subject-late tells	-20
part subject-late tool	19	-56
part subject-late verbish	15	15
person	-26	-12
phrase nouns 1		14
phrase nouns 2		22
phrase nouns 3		38
phrase opens a		22
phrase opens all			-43
phrase opens and		22
phrase opens another		14
phrase opens anything		-28
phrase opens at			-12
phrase opens back		-22
phrase opens em		-13
phrase opens for		-22	-19
phrase opens from		-42
phrase opens her		-31
phrase opens if		25
phrase opens in		-27	-31
phrase opens is		-58
phrase opens it		-31	-14
phrase opens mark		40	-16
phrase opens me		29
phrase opens new		76
phrase opens nothing		27
phrase opens number		-34	13
phrase opens of		20	-21
phrase opens out		-13
phrase opens quantity			-15
phrase opens round		52
phrase opens that			-14
phrase opens the		31	24
phrase opens them		-22	26
phrase opens those		13
phrase opens to		-17	-38
phrase opens up		-19	29
phrase opens with			-22
phrase opens yet		-58
phrase points em 0		-18
phrase points it 0		-19	-26
phrase points it 1		33
phrase points it 2		34
phrase points nothing 1		12
phrase points nothing 2		26
phrase points one 0		-16	28
phrase points one 1		28
phrase points one 2			-13
phrase points that 0		42	27
phrase points that 1		-12
phrase points that 2		17
phrase points them 0			35
phrase size 0		21
phrase size 4		17
phrase size 5		44
phrase size 6		17
phrase subject and behind owed		34
phrase subject and behind present			16
phrase subject modal		22
phrase subject owed		30
points both -1			17
points both -2			32
points both -4			-19
points both here-after			-30
points both here-before			54
points both object		38	-29
points both subject		43	44
points both subject-late			25
points em +1		-16	-26
points em -1		25	41
points em -2		-37	-36
points em -3		35	-28
points em -4			40
points em bare		-52	-37
points em here-before			22
points em opens		16
points em subject		13	36
points em subject-late		33	-44
points it +1		-29	-19
points it -1			16
points it -2			25
points it -4			-15
points it bare		-39	-19
points it here-after		-26	-39
points it here-before			45
points it object		-27	-18
points it opens		35
points it subject		19	16
points it subject-late			32
points none +1			-15
points none -4			-15
points none here-after		14	15
points none here-before		25	21
points none object			-15
points one +1		-15
points one -1		51	47
points one -2		-12	60
points one -3		-17	-79
points one -4		15
points one here-before			-33
points one object			-38
points one opens		17	25
points one subject		-21	36
points one subject-late		63	32
points that +1		-20
points that -1		52	31
points that -2		31	-21
points that -3			-12
points that -4		-29
points that bare		-21	-36
points that here-after		24	61
points that here-before		-39	-26
points that object			-29
points that opens		-37	-19
points that subject		41	65
points that subject-late			17
points them +1		-40	-31
points them -1		18	31
points them -2		46
points them -3		35
points them -4		-66	18
points them bare		29	-31
points them here-after		51	-45
points them here-before		20	-45
points them object			18
points them opens		-58
points them subject		28	-20
points them subject-late		42	-43
points they +1		-13	-16
points they -1		27	48
points they -2		40
points they -4		-45
points they bare		21
points they here-after		-39	-17
points they here-before		94
points they object		-18	67
points they opens		28
points they subject			-22
points this -2		46
points this -3		-56
points this -4		13
points this opens		22
points this subject		-50
points those +1		-27	-26
points those -1		-33
points those -2			45
points those -3		39
points those -4		42
points those bare		42
points those here-after		-22	-13
points those here-before		86
points those object		14	-37
points those subject		-39	-14
points those subject-late		93
prep about	-35	20	-12
prep above		-57	33
prep across	17		-20
prep after	-27	-67	-24
prep along	23	-33
prep around	20	15	18
prep at	-19	-18	-19
prep behind			-26
prep below	-70	-31	-14
prep between	16	-31
prep by	-38	-35	-44
prep down	31	46	-42
prep for			-21
prep from	-23	-29	-30
prep here-after after		-78
prep here-after along	-13
prep here-after around			23
prep here-after at	-23	-30
prep here-after behind		45	-13
prep here-after below	-114
prep here-after by	-25	-51	-18
prep here-after down	21
prep here-after for	-34	48	-38
prep here-after from	-47		21
prep here-after in	22
prep here-after near	-63
prep here-after of	43	35	18
prep here-after off	28		58
prep here-after on	25		28
prep here-after out	-25		22
prep here-after over	69	27	-18
prep here-after past	-67
prep here-after through	98
prep here-after to	-69	45
prep here-after under	13
prep here-after up		29	40
prep here-after with	-74	13	-55
prep here-before at	38	56	22
prep here-before before		15
prep here-before behind	16
prep here-before by	-79
prep here-before for			-21
prep here-before in	-21		32
prep here-before of	31	52	-24
prep here-before on		-29
prep here-before to	73	88
prep here-before under	42
prep here-before with	-23
prep inside	33	-20
prep into	-48		-66
prep near	-18	-32
prep next		14
prep off	30		20
prep other above		-39	65
prep other across	23		-18
prep other after		-35	-36
prep other along	56	-32
prep other at	-22	-19	-24
prep other before		-28
prep other behind		-19	-29
prep other below	28	-31	-15
prep other between	-32	-57	-12
prep other by	-28	-32	-43
prep other down	25	50	-50
prep other for	12	-12
prep other from		-38	-37
prep other in	-13
prep other inside		-20
prep other into	-41	30	-17
prep other near	33	-40
prep other off	32
prep other on			-14
prep other out	-14	-15	-30
prep other over	-40	-26	-34
prep other past	16	-30	-33
prep other through			-22
prep other to	-29	-28	-23
prep other toward	-63	-12
prep other under	-16	-36	-36
prep other up	-13	50	36
prep other with		-25	-23
prep other without	-28	38
prep out	-21	-35	-15
prep over		-17	-33
prep past	-36	-30	-33
prep through	68	-18
prep to	-30		-15
prep toward	-67	-52	-26
prep under		-44	-33
prep up	-15	57	48
prep with	-22	-17	-36
prep without	-57	33
rank after 2	-18	-18	-14
rank after 3	-30	22	-66
rank before 0	36
rank before 2	-12
rank before 4		17	13
rule done/copula			12
rule done/none			31
rule lacks none 0	-38		15
rule lacks none 1			15
rule problem/absent	-21
rule problem/defect-before	45
rule problem/missing	-15
rule problem/unwell	31
rule size 4	34		22
rule size 5	57		25
rule word 		-12
rule word 2			19
rule word at		-20
rule word back	32
rule word bag			-38
rule word basement	-30
rule word bath	15
rule word big	-12
rule word bolts	31
rule word box	-40
rule word brackets	60
rule word cap	-13
rule word ceiling	34
rule word coat			62
rule word cord	-27
rule word corner	-33
rule word counter	28
rule word crown		13
rule word dining	-15
rule word door	24
rule word edge	-17
rule word eight			-14
rule word end	17
rule word entry	13
rule word faucet	-22
rule word feet			54
rule word finish			26
rule word first			116
rule word floor	54
rule word front	45
rule word gate	13
rule word get		15
rule word go		-25
rule word guest	21
rule word hall	17
rule word header	30
rule word heat			34
rule word hinge	35
rule word inch			-16
rule word install			34
rule word island	-17
rule word leave		-13
rule word line	19
rule word lock	13
rule word main	-15
rule word new	-29
rule word newel	14
rule word old	21	-12
rule word on			38
rule word one			68
rule word paint	21
rule word panel	35
rule word plaster	23
rule word porch	-24
rule word quarter		33
rule word rail	16
rule word room	23
rule word round		38
rule word second	-12
rule word shelf	26
rule word shower	-14
rule word side	-19
rule word six			87
rule word soffit	-58
rule word step	-17
rule word steps	17
rule word switch	17
rule word tile	30		15
rule word tiles	25
rule word top	17
rule word tray	19
rule word tub	-17
rule word up		21
rule word vanity	18
rule word wall	15
rule word walls			13
rule word washer	51
rule word wet	-13
rule word wire	15
says its verb		-18
sentences -1	-29	-36	-18
sentences -1 bare	-19	-29	-27
sentences -1 object	-14	-16
sentences -1 opens	-16	-24
sentences -1 subject	-19	-14	-13
sentences -1 subject-late		-19
sentences -2	-18	-27	-42
sentences -2 bare	-17	-18	-24
sentences -2 object		-23	-19
sentences -2 opens		-14	-24
sentences -2 subject			-21
sentences -2 subject-late		27	-19
sentences 1	-19	-18	-18
sentences 1 bare	-18	-13
sentences 1 opens	-13	-18	-15
sentences 1 subject	-17	-13	-14
sentences 1 subject-late	-22	-40	-28
size 1	-36	-22	-21
size 1 far	-13		-13
size 1 far+here		-15
size 1 here	-13
size 1 outside 1	-15	-14	-13
size 1 pair		-61
size 2	20
size 2 here	24	13	15
size 2 outside 0	12
size 3		13
size 3 here	52	20	35
size 3 outside 0	19	24	15
size 3 pair		36	31
size 3 told		-13	-18
size 4	13	13
size 4 far		-14
size 4 far+here		14
size 4 here	100	51	38
size 4 outside 0	27	35	19
size 4 outside 1	12
size 4 outside 2		15
size 4 outside 3	13		-12
size 4 pair	21	63	39
size 4 told			39
size 5			17
size 5 far+here	-12	18
size 5 far+phrase			27
size 5 here	72		18
size 5 outside 0	29	44
size 5 outside 2		16	19
size 5 outside 3	-15		32
size 5 pair	22	37	-13
size 5 phrase		31
size 5 told			-39
size 6 far		-38	-27
size 6 far+phrase		36
size 6 outside 0		-12
size 6 outside 1			24
size 6 outside 2		28
size 6 outside 3	30	27
size 6 outside 4	-21		-24
size 6 pair		-27
size 6 told			23
size 7	-12
size 7 far	-12	-38	-57
size 7 far+here	-14	-19	20
size 7 far+phrase		47	13
size 7 outside 2			17
size 7 outside 3	-12		14
size 7 outside 4	-16	-12
size 7 phrase		14
size 7 told		-22
sort CONJ			-18
sort COP		-58	25
sort DET		36
sort MOD		38
sort NEG			-21
sort OPR			19
sort PREP	-21
sort PRON			-19
sort SUB		14
sort Vbuyb		-28
sort Vhaveb		-59
sort Vmeasurei	-38	-13	-33
sort Vmeasurepp		-38
sort Vmeasures		-25
sort Vmoveb			-13
sort Vmovei	45	-58
sort Vmovep		-29
sort Vmoves		14	-17
sort Vneedb			-12
sort Vneeds	-28	-22	-15
sort Votheri	23	-35
sort Votherp			-13
sort Votherpp	48	-33
sort Vothers	-29
sort Vreturnb		-14	41
sort Vsayb	-62
sort Vsaypp		-53
sort Vseeb	-36
sort Vworkb		22	17
sort Vworkbp	17	42	-13
sort Vworkbpp	-23		17
sort Vworki			22
sort Vworkpp	-19
sort w	-18		-14
sort w's		-26
sort wed	-18
sort wing	-12
sort wly	-47	-63	-19
stands after		-19	-15
stands after 0 of 0	17	-30	-29
stands after 1 of 0	-41	-28	-31
stands after 2 of 0		-27	-25
stands after 2 of 1	-15
stands after has 0	-15	-47	-46
stands after has 1		-13	-14
stands after has 2	-15
stands after points em		-30	-14
stands after points it		-27	-23
stands after points it's	-44	-15	-24
stands after points nothing		-16
stands after points one		-19	-18
stands after points ones			-13
stands after points that		-19
stands after points that's		-17	-38
stands after points them		-22	-38
stands after points they		-40
stands after points they're		-31
stands after points those		-19
stands before 0 of 0	29		27
stands before 0 of 2		-16
stands before 1 of 0	-23		24
stands before 2 of 0			-12
stands before 2 of 2	-16
stands before 3 of 0	40	20
stands before 3 of 1	-34
stands before 4 of 0		-24	-20
stands before 4 of 1		43	14
stands before 4 of 2		20	31
stands before 4 of 3			43
stands before has 0	39	34	34
stands before has 1	-15		-17
stands before has 2	-12
stands before points both		45
stands before points em		15	-24
stands before points it			12
stands before points it'll		-31
stands before points it's	-20	-20	15
stands before points nothing			-13
stands before points one		27	20
stands before points that		23
stands before points that's		38	42
stands before points them		27	33
stands before points they're		51
stands before points this		-20
stands before points those		67
stands here	12	19	15
stands here 0 of 1	17	29	16
stands here 0 of 2	33		23
stands here 0 of 3	58	22
stands here 1 of 2	-15	12
stands here 1 of 3			28
stands here 2 of 3	-26	-19	-16
stands here 3 of 3	-37	13	-71
stands here has 1	17	29	16
stands here has 2	18		20
stands here points both		-28	31
stands here points em		19	40
stands here points it			13
stands here points it'll		43
stands here points it's	46	75	-21
stands here points nothing		27	17
stands here points ones			54
stands here points that			22
stands here points that's		39
stands here points them		23	-42
stands here points they		22
stands here points this		42
stands here points those			-25
subject none +1	-21
subject none -1	13
subject none here-before	20
subject own here-after	-19
subject own here-before	21
subject person +1	-45
subject person -1	14
subject person -3	-35
subject person here-after	16
subject person here-before	26
subject pointer +1	-40
subject pointer -1	19
subject pointer -4	-15
subject pointer here-after	12
subject pointer here-before	-60
subject tells -1	-31
subject tells -3	42
subject tells -4	-23
told as bought before	-20		45
told as done after		-25
told as fixed after		-39	-36
told as fixed before		-13	34
told as fixed here		-25
told as have after		-13
told as have before		64	16
told as have here		60
told as need after		-14
told as need before		-22	-33
told as need here	44	40
told as open after		-31	-23
told as open before		14	-22
told as open here			26
told as ordered before		57
told as used after	23	18
told as used here	25	31
told done 0 near		-13
told done 1 near		-17
told fixed far		-21	-43
told fixed over		25
told problem 0 over		27
told problem 1 over			22
told size 3		-14	-18
told size 4			21
touches-after	-13
touches-before	19
unit none defect	-20
unit none finish	-14
unit none fixture	19
unit none material	15
unit none part	18
unit none tells	-20
unit none word	-13
use buy		21	50
use have	15	-16	24
use measure	-12	-19	-16
use return	-13		-15
use say	-21
use see	15		-18
use use			-13
verb behind #		39	34
verb behind a		21	-38
verb behind already			27
verb behind and			-76
verb behind are		-40	51
verb behind be		83
verb behind been			41
verb behind before		58
verb behind can		24
verb behind can't		42
verb behind come		43
verb behind don't		70
verb behind dont		20
verb behind get		131
verb behind gets		38
verb behind gotta		-14
verb behind have			44
verb behind he		-44	-29
verb behind he'll		32
verb behind he's		22
verb behind i		-14	26
verb behind i'd		-30
verb behind i'll		41
verb behind i'm		21
verb behind i've			16
verb behind is		-49	37
verb behind it		-29
verb behind it's		-43	93
verb behind just		46
verb behind must		-16
verb behind need		23
verb behind needs		44
verb behind no			-84
verb behind nobody		64
verb behind not		31
verb behind number		22	49
verb behind of		12
verb behind on		-31
verb behind quantity		-29	-23
verb behind she		-76	-75
verb behind should		-35
verb behind somebody		28
verb behind still		-15
verb behind term		-37
verb behind that		-18
verb behind that's		-18	-26
verb behind the		-50	-28
verb behind they		-68
verb behind they're		-34
verb behind time		52
verb behind to		68	16
verb behind wants		64
verb behind was			-60
verb behind we		29	40
verb behind will		26
verb form b main		31	26
verb form b side		19	-18
verb form bp main		41
verb form bp side			14
verb form bpp main		40
verb form bpp side		36	32
verb form i main		60
verb form i side		22	-32
verb form p main		-80
verb form p side		-40
verb form pp main			34
verb form pp side			35
verb form s main		-14	15
verb form s side			-45
verb lemma add imperative		39
verb lemma ask imperative		63
verb lemma bend past			41
verb lemma blow past			69
verb lemma bolt copula			34
verb lemma bolt past			-67
verb lemma book copula		-28
verb lemma box past			-26
verb lemma bring imperative		34
verb lemma bring modal		24
verb lemma bring present		-16
verb lemma call imperative		46
verb lemma call past			-29
verb lemma cap past			30
verb lemma caulk past			31
verb lemma change past			22
verb lemma change present			39
verb lemma check imperative		51
verb lemma check past			36
verb lemma clean past			58
verb lemma close present		-37
verb lemma come copula		-65
verb lemma cut copula		-43	43
verb lemma cut imperative		83
verb lemma cut modal		25
verb lemma cut none		32
verb lemma cut owed		33
verb lemma cut past			-33
verb lemma cut present		92
verb lemma do copula			43
verb lemma do none		-68
verb lemma drill past			-17
verb lemma dry copula		-42
verb lemma dry imperative		-56
verb lemma dry none			-46
verb lemma file past			23
verb lemma fill imperative		26
verb lemma fill past			70
verb lemma find imperative		14
verb lemma finish copula			-21
verb lemma finish modal		14
verb lemma finish none			-27
verb lemma finish past			14
verb lemma finish present		28	-53
verb lemma fit past			39
verb lemma fix past			45
verb lemma flip past			23
verb lemma fre past			36
verb lemma get imperative		-50
verb lemma get modal		-46
verb lemma get owed		-72
verb lemma get past		-49
verb lemma give imperative		-35
verb lemma glue copula			31
verb lemma glue past			34
verb lemma go copula		-112	-22
verb lemma go modal		-43
verb lemma go none		-45	-33
verb lemma go owed		-117
verb lemma go past		-20	-96
verb lemma go present		-41
verb lemma grout past			39
verb lemma hang copula			46
verb lemma hang imperative		45
verb lemma hang past			45
verb lemma hang present		18
verb lemma hold past			-68
verb lemma install past			14
verb lemma lay past			-17
verb lemma leave imperative		-77
verb lemma leave none		34
verb lemma leave past		-70
verb lemma leave present		-36
verb lemma level copula			-49
verb lemma level past			-37
verb lemma lift past			29
verb lemma look imperative		32
verb lemma look modal		50
verb lemma look owed		16
verb lemma look present		76
verb lemma make imperative		-51
verb lemma make past			-31
verb lemma measure past			77
verb lemma miss none		-63
verb lemma move imperative		-23
verb lemma move modal		37
verb lemma move owed		23
verb lemma move present		24
verb lemma nail past			48
verb lemma open present		-74
verb lemma order imperative		34
verb lemma order past		-63	35
verb lemma owe present		32
verb lemma pack past			54
verb lemma paint copula			21
verb lemma paint imperative		35
verb lemma paint modal		54
verb lemma paint past			14
verb lemma pass past			37
verb lemma patch imperative		15
verb lemma patch past			62
verb lemma pour past			-30
verb lemma prime past			28
verb lemma prime present		34
verb lemma pull imperative		28
verb lemma pull modal		-17
verb lemma pull owed		39
verb lemma put imperative			27
verb lemma put none		-14	-25
verb lemma put owed		-16
verb lemma put past		28	-16
verb lemma redo imperative		55
verb lemma rehang past			68
verb lemma replace imperative		55
verb lemma replace past			48
verb lemma reset none			50
verb lemma return none		21
verb lemma roll past			39
verb lemma run copula			-45
verb lemma run imperative		35
verb lemma run none			38
verb lemma run past		-74
verb lemma run present		45	21
verb lemma sand copula			19
verb lemma sand imperative		32
verb lemma sand modal		59
verb lemma sand owed		36
verb lemma sand past			25
verb lemma sand present		-27
verb lemma scrape past			26
verb lemma screw copula			-48
verb lemma screw past			-33
verb lemma scribe modal		41
verb lemma scribe past			15
verb lemma seal past			35
verb lemma send imperative		76
verb lemma send past			40
verb lemma set copula			63
verb lemma set none			45
verb lemma set past			34
verb lemma shim imperative		16
verb lemma shim past			12
verb lemma show present		-37
verb lemma shut past			73
verb lemma sister past			60
verb lemma snake past			51
verb lemma snug past			26
verb lemma spray past			18
verb lemma start imperative		-23
verb lemma start modal		48
verb lemma start present		67
verb lemma stick past			-55
verb lemma swap imperative		51
verb lemma swap past			31
verb lemma take imperative		61
verb lemma take modal		-21
verb lemma take present		25
verb lemma tape past			18
verb lemma tear past			-19
verb lemma tell past		-73	26
verb lemma tighten past			42
verb lemma top past			-19
verb lemma touch imperative		44
verb lemma touch present		-52
verb lemma turn past			36
verb lemma use imperative		-22
verb lemma use past			-50
verb lemma wrap copula			17
verb main		26	29
verb main imperative		43	37
verb main modal		25
verb main owed		28	66
verb main past		-30	28
verb main present		18	16
verb no rule		27	29
verb none		-26	-27
verb none of 0			-28
verb none of 1		-31	-27
verb none of 2		-29	-28
verb none of 3		-25	-25
verb none of 4		-14
verb none turn		-21	-22
verb nth 0		21	24
verb nth 0 of 1		29	29
verb nth 0 of 2			17
verb nth 0 of 4		17	31
verb nth 1 of 3		15	-20
verb nth 1 of 4		-16
verb nth 2		18
verb nth 2 of 3		20
verb nth 3		16	-21
verb nth 3 of 4		17	-20
verb of rule		32	33
verb of rule come		-26
verb of rule finish			-45
verb of rule install		-40	28
verb of rule send		86
verb other rule		-28	-27
verb same rule		49	33
verb says add		52
verb says adjust			20
verb says ask		72
verb says bend			37
verb says blow			20
verb says book		-40
verb says buy		-20
verb says call		53	46
verb says cap			49
verb says caulk		44	45
verb says change		74	43
verb says check		101	37
verb says clamp			-13
verb says clean			34
verb says clear			57
verb says close			45
verb says complete			-23
verb says cover		53
verb says cut		51	14
verb says cut in		38	59
verb says cut out		47	-111
verb says decide		36
verb says dig			-19
verb says do		-76
verb says drill		22
verb says drip			-42
verb says drop		52
verb says dry		-46	-58
verb says file		25	45
verb says fill		54	70
verb says find		-17
verb says finish		48	-30
verb says fit		95	16
verb says fix		31	49
verb says flash			29
verb says flush		24
verb says foam			27
verb says frame			26
verb says fre			36
verb says get		-73
verb says give		-59	-25
verb says glue		52	45
verb says glue down			41
verb says go		-40	-80
verb says go back		-41
verb says go down		-90
verb says go in		-88
verb says go on		-54
verb says go up		-19
verb says grab		14
verb says grind			20
verb says grout		70	51
verb says hang		45	49
verb says head			45
verb says hit		-13
verb says hold			-65
verb says install			46
verb says keep		-26
verb says lay		28	64
verb says leave		-62	-47
verb says level			-58
verb says lift			29
verb says look		73
verb says make		-41	-31
verb says measure		46	76
verb says miss		-63
verb says mount			16
verb says move		53
verb says nail			56
verb says open		-39	-13
verb says order			35
verb says owe		23
verb says pack			54
verb says paint		65	28
verb says pass		28	26
verb says patch		70	81
verb says pick up		43
verb says plane		51	35
verb says plumb			-35
verb says prime		35	22
verb says put		-15
verb says put in		-85	-38
verb says put on		57
verb says quote		65
verb says raise		31
verb says redo		74
verb says rehang		49	69
verb says replace		81	51
verb says reset		40	98
verb says return		63	-19
verb says rip		27
verb says roll		28
verb says sand		38	51
verb says scrape		81	28
verb says screw			-46
verb says scribe		52	47
verb says seal		38	75
verb says see		23
verb says send		38	28
verb says set		-35	53
verb says shim		19	15
verb says show up		-46
verb says shut			50
verb says sister		51	98
verb says sit		-63
verb says skim		73	25
verb says snug			23
verb says spray		21	35
verb says start		46
verb says stay		-57
verb says stick		-72
verb says stop		-22	-25
verb says strap			-39
verb says strip		21	12
verb says swap		68	40
verb says swing		-45
verb says take		-16	-43
verb says take back		93
verb says tape		32
verb says tell			26
verb says test		42	73
verb says tie			-34
verb says tighten			32
verb says tile		28
verb says top		-21	-55
verb says touch		-33
verb says trim		21	21
verb says try		22
verb says turn		32	19
verb says use		-24	-62
verb says walk		12
verb says wash			23
verb says wire			47
verb says work			-41
verb says wrap			28
verb side		13
verb side copula			27
verb side imperative		21	-24
verb side none		25
verb side past		45	-20
verb term defect		-19	-51
verb term finish		-48
verb term material		51	65
verb term part		67
verb term surface		73
verb term tool		55
verb turn back copula		34	-43
verb turn back imperative		-14
verb turn back modal		16
verb turn back none			-60
verb turn back owed		-29
verb turn back past			-41
verb turn come back			-55
verb turn done copula			-36
verb turn done none			-61
verb turn down copula			45
verb turn down none		-17
verb turn finish		30	-54
verb turn good copula			-54
verb turn in copula		-42	19
verb turn in none		39	20
verb turn in past			50
verb turn in present		100
verb turn install		27	19
verb turn new copula		-76	-84
verb turn new imperative		58
verb turn new modal		54
verb turn new none		21	125
verb turn new owed		-42
verb turn new past			77
verb turn new present		-43
verb turn off copula		-38	-26
verb turn off none			-70
verb turn on copula		44	18
verb turn on modal		45
verb turn on present		55
verb turn out copula		19	-66
verb turn over none		-28
verb turn replace		-18	65
verb turn take back		37	-48
verb turn take off			-60
verb turn take out		14	-59
verb turn up copula		13	55
verb turn up none		-16	72
verb turn up present		-14
verb use buy side		-15
verb use measure main		-13	-45
verb use measure side		-32	-48
verb use move main		-65	-61
verb use move side		-49	-51
verb use other main		-23
verb use other side			-17
verb use return main		51
verb use return side		69
verb use say main		31
verb use say side		34
verb use see main		68	42
verb use see side		74
verb use use main			-66
verb use work main		52	37
verb use work side		29	19
where +1	-18	-12	-16
where -1		15
where here-before	17	14	20
whole after at defect	15
whole after for defect	-35
whole after from defect	45
whole after in word	54
whole after on defect	-38
whole after quantity defect	-24
whole after quantity material	40
whole after quantity part	-64
whole after quantity word	46
whole after term area	-24
whole after term defect	-24
whole after term finish	-23
whole after term material	38
whole after term part	26
whole after term size	-21
whole after term surface	38
whole after term verbish	-19
whole after term word	62
whole after to defect	-12
whole after with defect	-17
whole after word area	43
whole after word defect	-12
whole after word material	28
whole after word part	33
whole after word surface	30
whole after word verbish	-30
whole article a	-14
whole article none		-13
whole article other			-19
whole article the		28	15
whole behind about -1	25
whole behind about -2	-25
whole behind about -3	-43
whole behind about here-before	-29
whole behind at +1	-24
whole behind at -1	-15
whole behind at -2	-41
whole behind at -3	-42
whole behind at -4	-25
whole behind at here-before	20
whole behind behind -2	-38
whole behind behind -3	-42
whole behind behind -4	-23
whole behind behind here-after	-30
whole behind behind here-before	21
whole behind by +1	-31
whole behind by -1	14
whole behind by -2	-21
whole behind by -4	23
whole behind by here-before	-16
whole behind down -1	-23
whole behind down -2	-57
whole behind down here-before	24
whole behind end -1	-14
whole behind end -2	-13
whole behind end -4	-17
whole behind end here-before	14
whole behind for +1	-20
whole behind for -1	71
whole behind for -3	12
whole behind for here-after	-17
whole behind for here-before	17
whole behind from +1	-19
whole behind from -1	-20
whole behind from -2	-62
whole behind from -3	23
whole behind from -4	30
whole behind from here-after	27
whole behind from here-before	72
whole behind in -1	-15
whole behind in -2	-33
whole behind in -3	-41
whole behind in -4	-45
whole behind in here-before	12
whole behind mark +1	-16
whole behind mark -1	-39
whole behind mark -2	36
whole behind mark -3	-32
whole behind mark -4	-21
whole behind mark here-after	47
whole behind mark here-before	45
whole behind number +1	-19
whole behind number -1	38
whole behind number -2	35
whole behind number -3	27
whole behind number -4	-16
whole behind number here-after	23
whole behind of +1	-19
whole behind of -1	65
whole behind of -2	18
whole behind of -3	52
whole behind of here-after	-27
whole behind off +1	-24
whole behind off -2	-15
whole behind off -3	22
whole behind off -4	25
whole behind off here-before	-14
whole behind on +1	-22
whole behind on -1	21
whole behind on -4	22
whole behind on here-before	27
whole behind out +1	27
whole behind out -1	-45
whole behind out -4	38
whole behind out here-after	-56
whole behind over -1	-36
whole behind over -2	35
whole behind over -3	-44
whole behind over -4	-14
whole behind over here-after	51
whole behind quantity +1	-30
whole behind quantity -1	28
whole behind quantity -2	-16
whole behind quantity -3	-19
whole behind quantity here-after	13
whole behind quantity here-before	26
whole behind short -2	-46
whole behind short -4	-23
whole behind term +1	-15
whole behind term -3	28
whole behind term -4	-24
whole behind term here-after	29
whole behind term here-before	20
whole behind through -2	-19
whole behind to -1	23
whole behind to -2	-27
whole behind to -3	69
whole behind to -4	-21
whole behind to here-before	42
whole behind under -2	-25
whole behind up +1	-14
whole behind up -1	-26
whole behind up -2	53
whole behind up -3	-43
whole behind up -4	-15
whole behind up here-before	14
whole behind with -1	-88
whole behind with -2	16
whole behind with -4	-20
whole behind with here-after	-37
whole behind word +1	-14
whole behind word -1	14
whole behind word -2	21
whole between get	21
whole between has	44
whole between has a	-19
whole between still	-21
whole counted bare	14	20
whole counted count		-32	-20
whole counted current	-52
whole counted length	-16	-31	-27
whole counted pack	18	21	-33
whole counted pressure	-15
whole counted time	21	-51
whole counted volume	-18	19
whole counted weight	18
whole does be area		-48	-15
whole does be defect		18
whole does be finish		-45
whole does be fixture		-28	-32
whole does be material		43	-20
whole does be part			-39
whole does be size		-20
whole does be surface		28
whole does be tells		-30	-37
whole does be tool		-17
whole does be verbish		19	-28
whole does bring defect		-16
whole does bring fixture		-30
whole does bring material		37
whole does bring part		-29
whole does bring word		48
whole does change area			-30
whole does change defect			-27
whole does change part			14
whole does change word		68
whole does clean word			45
whole does come fixture		23
whole does come part		32
whole does come size		21
whole does come surface		-19
whole does come verbish		45
whole does cut area		-21
whole does cut defect		82	56
whole does cut fixture		52
whole does cut material		53
whole does cut part		-62	31
whole does cut surface		13	92
whole does cut verbish		-37
whole does cut word		-44
whole does do defect		-22
whole does do fixture		118
whole does do material		-63
whole does do part		20
whole does do surface		21
whole does drill material			-29
whole does drill part			54
whole does dry word		18
whole does fill defect			64
whole does fill material			-26
whole does fill part			-18
whole does fill surface			100
whole does fill word			-77
whole does find word		-38
whole does finish area			25
whole does finish material			70
whole does finish surface			41
whole does finish word			-17
whole does fix material			-17
whole does fix word			-41
whole does fre word			15
whole does get area		-38	-19
whole does get defect		70	38
whole does get finish		-23
whole does get fixture		39
whole does get material			-55
whole does get part		75	-20
whole does get surface		-28
whole does get tool		32
whole does get verbish			-16
whole does get word		-47	22
whole does glue material		16	-15
whole does glue surface			32
whole does go area		35
whole does go finish		-37
whole does go fixture		16
whole does go material		43	47
whole does go part		-27	-56
whole does go size		-17
whole does go surface		-46	67
whole does go tool		-12
whole does go verbish		-41
whole does go word		-29	-30
whole does hang area			12
whole does hang defect		-13
whole does hang fixture		52	-34
whole does hang material		-59	36
whole does hang part			-28
whole does hang surface			-37
whole does hang word		39	-22
whole does have area		-19
whole does have fixture			52
whole does have material		71	-19
whole does have part		31
whole does have word		34
whole does i'll word		-53
whole does keep material		27
whole does leave area		-18
whole does leave defect		-33
whole does leave material		98
whole does leave part		33
whole does leave surface		48
whole does leave verbish		-21
whole does leave word		-59
whole does let defect		-15
whole does let material		16
whole does let word		-68
whole does look defect		-21
whole does look word		-17
whole does make material			-21
whole does make surface		34
whole does make word		16
whole does move fixture		-27
whole does move material		-20
whole does move surface		-25
whole does move word		-38
whole does need area		-28
whole does need fixture		19
whole does need material		14
whole does need part		39
whole does need size		15
whole does need verbish		-53
whole does need word		36
whole does open surface		32	-33
whole does open word		-35
whole does order material		30
whole does order part		32
whole does order word		-16
whole does pack word			-18
whole does paint material		-34
whole does paint word		13
whole does patch material		-30
whole does pick word		-14
whole does pull area			-20
whole does pull defect		-21	49
whole does pull material		51	-16
whole does pull part			15
whole does pull surface		-13	-62
whole does pull word		-13	-24
whole does put area			13
whole does put defect			-54
whole does put material		13	26
whole does put part			67
whole does put size			74
whole does put surface		-33	-44
whole does put verbish		-14	-16
whole does put word		-53	-54
whole does replace defect			18
whole does replace material			-29
whole does replace part			45
whole does rip material		49
whole does run area			16
whole does run defect			93
whole does run fixture			17
whole does run material			-24
whole does run part			29
whole does run surface			-26
whole does run verbish			-46
whole does run word		-17	-47
whole does sand defect		-51
whole does sand fixture		50
whole does sand surface		15
whole does sand word		-43
whole does say defect		-23
whole does say part		-23
whole does say word		-29
whole does scrape material			62
whole does scrape surface			-44
whole does scrape word		-23	-16
whole does screw defect			-17
whole does screw material			62
whole does screw part			40
whole does screw surface			23
whole does screw word			-31
whole does scribe word			12
whole does seal material			16
whole does seal word			-25
whole does see material		-28
whole does see part		44
whole does see word		49
whole does send material		-79
whole does send word		13
whole does set fixture			15
whole does set material			43
whole does set word		-16	-33
whole does shim defect			-56
whole does shim fixture			-39
whole does shim material		-41	-49
whole does shim part			54
whole does shim word			55
whole does sit word		-12
whole does snug part			-27
whole does start word		-14
whole does swap defect		-29	-48
whole does swap material		33	38
whole does swap part		95
whole does swap word		-21	-53
whole does take area		29	17
whole does take defect		-45	-46
whole does take fixture		-31	141
whole does take material			-44
whole does take part			51
whole does take surface		-62	-33
whole does take word		88	-41
whole does tape material			34
whole does test word			17
whole does touch word		58
whole does turn part			-14
whole does wait material		38
whole does wait surface		-37
whole does wait word		-13
whole does want area		-21
whole does want defect		-37
whole does want fixture		87
whole does want part		-27
whole does want word		34
whole ends Nlabel	23	-32
whole ends PREP			-18
whole ends Q0	-56	-73	-63
whole ends Vmeasurei			-19
whole ends Vmoveb	13	27
whole ends Vmovei	-14
whole ends Vmovep	-16	-29
whole ends Vmoves	-18	-22	-23
whole ends Vneedb	-33	-54
whole ends Vneeds	25	-23	-27
whole ends Votherb	-28
whole ends Votheri	-13	-43
whole ends Vsayb	-27	33	-36
whole ends Vseeb	-27	-16
whole ends Vworkbp	51	16	19
whole ends Vworkbpp	-13		-26
whole ends Vworki			-13
whole ends Vworkpp	-15
whole ends Vworks	-20	29	42
whole ends tarea's	-36
whole ends tdefect's	13
whole ends tdefectVotherb	-13	32	75
whole ends tdefectVotheri		-36	-32
whole ends tdefectVotherp	-24	-22	-14
whole ends tdefectVotherpp	-13	-27	-33
whole ends tdefectVothers	-21	-34	22
whole ends tdefectVworki		-25	-28
whole ends tdefectVworkp		-45
whole ends tdefectVworkpp			-18
whole ends tdefectVworks	-17	34	-27
whole ends tfinish	-25	-15
whole ends tfinishVworkb		27	-40
whole ends tfinishVworkpp	25
whole ends tfixture	12	15	15
whole ends tfixture's	20	-18
whole ends tfixtureVworkb	-22		-33
whole ends tfixtureVworks	-35
whole ends tmaterial			19
whole ends tmaterial's		69
whole ends tmaterialVotherb	29		16
whole ends tmaterialVworki		52
whole ends tmaterialVworks		-22	-15
whole ends tpart		13
whole ends tpart's		33	38
whole ends tpartVotherb	-23	14	18
whole ends tpartVothers	38	-62
whole ends tpartVworkb			18
whole ends tpartVworks	22		-28
whole ends tsurface			17
whole ends tsurface's		24	-17
whole ends tsurfaceVotherb	-12	-22
whole ends tsurfaceVothers		-17
whole ends tsurfaceVworki		32	-48
whole ends tsurfaceVworks	-32	-23
whole ends ttool			-17
whole ends ttool's	38	69
whole ends ttoolVworkb			-15
whole ends ttoolVworks	-14	-16
whole ends twork	-17	40
whole ends w's		-16
whole ends wed	41	-19
whole ends wing	-43		-20
whole far after 0			13
whole far after 1	32	26	23
whole far after 13+	-18	-23
whole far after 3-4	-13	-13
whole far after 8-12	-14	-12	-21
whole far before 0		12
whole far before 1			-14
whole far before 13+	-16
whole far before 2	34
whole far before 5-7			17
whole far before 8-12		15
whole figure-between	49
whole flawed		21	35
whole frame copula +1		-13	-15
whole frame copula -1	-15	30	-28
whole frame copula -2			-13
whole frame copula -3			-23
whole frame copula -4	-17	-28	-18
whole frame copula area		34
whole frame copula defect		-13
whole frame copula finish		-18	-19
whole frame copula fixture		37
whole frame copula here-after	-16		17
whole frame copula here-before		27	24
whole frame copula part		13	-16
whole frame copula size		-18
whole frame copula surface		16
whole frame copula tells		16	-44
whole frame copula tool		-23
whole frame copula word		-24
whole frame copula work			-18
whole frame imperative +1	15	-21	-23
whole frame imperative -1		17	36
whole frame imperative -2			-26
whole frame imperative -3	-24		-31
whole frame imperative -4	-54		43
whole frame imperative area			-14
whole frame imperative defect			42
whole frame imperative finish		17
whole frame imperative fixture		18	16
whole frame imperative here-after	13	21	18
whole frame imperative here-before	22	29
whole frame imperative material			-28
whole frame imperative part			28
whole frame imperative size		23	18
whole frame imperative surface		-19
whole frame imperative tells		50
whole frame imperative tool		-28
whole frame imperative verbish			-19
whole frame imperative word		-20	-35
whole frame modal +1	-30	-22
whole frame modal -1	64	22	-39
whole frame modal -2			15
whole frame modal -3		14
whole frame modal -4	-26		14
whole frame modal area		21
whole frame modal finish		-29
whole frame modal here-after	43
whole frame modal part		17
whole frame modal size		-33
whole frame modal tells		23
whole frame modal tool		17
whole frame modal word			-22
whole frame none +1	-16
whole frame none -1	12		40
whole frame none -2			15
whole frame none -3		13
whole frame none -4		-13
whole frame none area		-22	18
whole frame none defect		-19
whole frame none finish		43	25
whole frame none fixture		-31	24
whole frame none here-after	13		29
whole frame none here-before	13	36
whole frame none material		20	28
whole frame none part		22
whole frame none size		-15
whole frame none surface		19	35
whole frame none tells		-43
whole frame none tool		53	-52
whole frame none work		-67
whole frame owed +1	-15
whole frame owed -1	13
whole frame owed -2	-58		-63
whole frame owed -3	-14
whole frame owed -4	-31
whole frame owed area		44
whole frame owed defect		-19
whole frame owed finish		-39
whole frame owed here-after		32
whole frame owed here-before	64	35
whole frame owed part		18
whole frame owed surface		15
whole frame owed tool		24
whole frame past +1		-55	-15
whole frame past -1		29	16
whole frame past -2		21
whole frame past -3		-14
whole frame past -4		-27	-27
whole frame past area			-25
whole frame past defect		-21
whole frame past finish		35	-47
whole frame past fixture		61	22
whole frame past here-after	29	40
whole frame past here-before	23	36	18
whole frame past material		60
whole frame past part		18	25
whole frame past size		-53
whole frame past tells		-22	35
whole frame past tool		-55
whole frame past verbish		-53	-19
whole frame past word		-43
whole frame present +1	-28	33	-19
whole frame present -1			32
whole frame present -2		14
whole frame present -3		-18
whole frame present -4	-23	-17	16
whole frame present area		-16	15
whole frame present defect			33
whole frame present finish		-30
whole frame present fixture		23	13
whole frame present here-after		26
whole frame present here-before	15		21
whole frame present material		19	29
whole frame present part			26
whole frame present size		37
whole frame present tells		-44
whole frame present tool		-26
whole frame present verbish			14
whole frame present word		-17	-34
whole head 2 x	-23
whole head adhesive		-30
whole head air		-15	21
whole head anybody		-23
whole head anything	-16	-19
whole head attic	-18	-34
whole head b		35	41
whole head back door	-37		-58
whole head backsplash	-19	75	-13
whole head bad	-25	-45
whole head bag	-36
whole head bar	-39	-13	-42
whole head base	30	33	60
whole head baseboard	-26	42
whole head basement	55	-34	-32
whole head basin	25
whole head bath	-15	33
whole head bath fan	51
whole head bathroom	21	-52
whole head batt	-44
whole head bay	68	-47	-60
whole head beam	17
whole head bed	85	-31	23
whole head bedroom	17	-33
whole head bedroom 2	-50
whole head bedrooms	-37
whole head bent			-31
whole head bifold	-21
whole head bit	-21	-32	-20
whole head black		-44	-20
whole head blade	-25
whole head bled	22	-23
whole head blinds	44		26
whole head block	-20	78	-18
whole head blue tape	-33
whole head board	15		46
whole head boards	90	117	-13
whole head bolt	-28		-16
whole head bolts	-19		90
whole head bottom		-21	-21
whole head bowed	-15
whole head bowl	36		14
whole head box		34
whole head bracket			89
whole head brass	-13	-19
whole head breaker	-31	-16
whole head brick	24		30
whole head broken	-28	-23
whole head bubble		101	37
whole head bucket	-20
whole head bulb	-32
whole head button	-14
whole head c			-39
whole head cabinet	-53	59
whole head cabinets	27		-17
whole head cable		-60	-68
whole head camera	-15
whole head cap	-17	14	-27
whole head card	-36
whole head carpet		-32	20
whole head cartridge	-29
whole head casing	-33	74	69
whole head caulk		30
whole head ceiling	127	77	-19
whole head ceiling's		70
whole head center	-12	-27
whole head chain			66
whole head chimney	51	104
whole head chip	-71	58	53
whole head circuit			31
whole head clamp	21
whole head clear		27	-40
whole head cleat	-18
whole head clips	-37		26
whole head closer	-17		33
whole head closet	86	26
whole head closet rod	47
whole head co	14
whole head coat	54		-17
whole head code		-30
whole head coil	14
whole head cold	-14		-18
whole head color	44		-35
whole head concrete	-19	64
whole head cord	-35		-48
whole head corner	-16	-18	-45
whole head corners		-50	65
whole head corridor	35
whole head counter		80	-44
whole head cove base	-39
whole head cover	39	39	-47
whole head crack	-22		122
whole head cracked		-20	-23
whole head crooked	-16
whole head crown	29		16
whole head crown's		62	23
whole head curb	-20	-23
whole head cut		-25
whole head cut out	-49	-55	16
whole head damper	-46
whole head dead		-26
whole head deadbolt	14
whole head deck		65	52
whole head den	43
whole head dimmer	-41	56
whole head ding		-33
whole head dining room	69	56	-25
whole head dishwasher	-53	22	47
whole head disposal	-15		92
whole head door	22	31	26
whole head door's	-42	29	16
whole head doors		20	20
whole head double			-23
whole head draft	25
whole head drain	44	-24	18
whole head drawer	13	17	36
whole head drawer front		18
whole head drawing	49
whole head drip	55		-34
whole head drop	-23	31	30
whole head drops	-18	-51	-16
whole head dry	35	44	-18
whole head dryer vent	-14
whole head drywall	17	-31
whole head duct	-34	-51
whole head due		-29
whole head duplex	-56
whole head edge	-42	16	51
whole head else	-16	-13
whole head end			-27
whole head end panel	20	-64	-58
whole head ends		-24
whole head entry			20
whole head epoxy	-41	-12	-28
whole head except	-29	-61	-18
whole head extra	-16
whole head face			12
whole head fall		-36	22
whole head falls	-46
whole head fan	21	-71
whole head fascia		90
whole head faucet	-15	21
whole head fella	-28
whole head fence		-24
whole head filler	-25
whole head filler strip	-46
whole head filter	-24
whole head filters	21
whole head finger	-17	-19
whole head fireplace		13
whole head first	-31	21
whole head first coat	-37		-41
whole head flange	25		-30
whole head flashing	27	-33	57
whole head flat	-19	-52	-22
whole head flex	78	-15	-16
whole head float	-33
whole head floor	42		61
whole head floor's	65	52	-35
whole head foam	-24	-16	-37
whole head footing	80
whole head frame	34	86	-22
whole head framing	-27
whole head free	-28
whole head fridge	56	-30	35
whole head front		-49	28
whole head front door	40		65
whole head full	15	-25	-16
whole head furnace	-42
whole head gap	-12	-22
whole head gaps		-17
whole head garage	-35	-38	43
whole head gary	-16	-12
whole head gas		-16
whole head gasket	-28	35	-83
whole head gate	-43		-23
whole head gauge	-33
whole head glass	37	14
whole head glue	18	-54	-39
whole head go	-36	-13
whole head god	-15
whole head goes	-21	-35
whole head going	-14
whole head gray	-37	-14	-23
whole head grease	-23
whole head grille	53
whole head grout		-13	-45
whole head guest room	88
whole head gutter	-45
whole head hair	-22	-16	-12
whole head hairline	-22
whole head hall	31	29
whole head hall bath			-22
whole head hallway	-20
whole head hand	-15		-17
whole head handle	-14	-39
whole head handrail			43
whole head hangers	50
whole head hard			-17
whole head hatch	52		79
whole head head	58	62
whole head header		61
whole head heat		-30
whole head heater	70	-16
whole head height	-14		-46
whole head hello			-23
whole head hinge		-24	67
whole head hinges	28	51	-30
whole head hole		50	16
whole head holes	53	44
whole head hollow		-28	105
whole head hood		13	-21
whole head hook	-29
whole head hooks	-21
whole head hose	14	-13	18
whole head hose bib		-75
whole head hot	29	23	55
whole head house	-17	-43	27
whole head inside			-18
whole head insulation			32
whole head island	-50	18
whole head itself	-23	131	54
whole head jack	-17	-44
whole head jamb	-13	14	-46
whole head job		37	-24
whole head joint	57		92
whole head joist	-12	-44	-18
whole head joists		-73
whole head key	-39	-58	28
whole head keys	63
whole head kit	-17
whole head kitchen	-25		-44
whole head kitchen faucet	-80
whole head kitchen island	63
whole head ladder	23
whole head lags	40
whole head laminate		-79
whole head lamp	-13
whole head landing		34	-15
whole head latch	-29
whole head laundry	37
whole head layers	-53
whole head leak		50	-29
whole head leaking		-15	21
whole head lean	-51
whole head leaning		-35
whole head ledger	-14
whole head leg	-37	-44	-26
whole head legs	-31	-49	-36
whole head let go	-28		-35
whole head level	-26	-44	-30
whole head lid	-17	41	62
whole head lift	-19
whole head light	48	-64	-77
whole head light's	-44
whole head lights	46
whole head line	13
whole head lip	-14		-35
whole head list	-17	-24
whole head living room	-55	-33
whole head load		17
whole head lock		-56
whole head look		-17
whole head loose		37	-29
whole head luis	-17
whole head main	41
whole head make	-23	-16
whole head manny		-29
whole head marble	43
whole head mastic	-21	-38
whole head meantime			-33
whole head mesh	-18	-69	41
whole head meter	15	-57
whole head middle		-28	-21
whole head mirror	84	39
whole head mirror's	-24	27
whole head missing		-23	-22
whole head mixing valve	23
whole head mold	43
whole head mortar	-23
whole head mud	-35
whole head nail		39
whole head nail plates		45
whole head nails	-14
whole head needs	-21	-17	-13
whole head neutral	33
whole head newel	-25	63
whole head nice	-19		-18
whole head niche	-19	22
whole head noise	44
whole head nosing	26	15	62
whole head number		60	-35
whole head nut	-18	49
whole head oak			78
whole head office	-18		46
whole head open	95	59
whole head opened up		-46
whole head opening		-32	-25
whole head ours	-22
whole head out of plumb	16
whole head outlet	94	34	91
whole head outlets	101		43
whole head outside	-15		29
whole head oven	25
whole head pad	-22
whole head paint	25	-29
whole head pan	-37		29
whole head panel	-13	-25	-29
whole head panel's	-39
whole head panels	28	-54	-40
whole head pantry	-20		-31
whole head paper	-28	-30	-16
whole head patch	-28	45	22
whole head piece		18
whole head pipe		31	-31
whole head place			-66
whole head plaster	72	-22
whole head plastic		-13	-24
whole head plate	-46	-28	37
whole head plate's	-38
whole head plates	14	27
whole head plinth	-46
whole head plug	-13	41	-61
whole head ply	42	-19
whole head plywood	14
whole head poly		26
whole head porch	-47		-22
whole head post	16	52	70
whole head posts	39	-22	70
whole head powder room	43		20
whole head primed	35
whole head primer	18		-38
whole head proud		-17
whole head proud of		-32
whole head pull	-38
whole head pulls	44	46	-42
whole head pump	19		-28
whole head punch	-37
whole head punky		-19
whole head push	-36
whole head putty		-66
whole head quiet	-14
whole head r	-36		-30
whole head rack	-35
whole head radiator	-19	-40	-14
whole head rail			17
whole head rain		-30	-30
whole head range	-36
whole head ray		-41
whole head re		57
whole head reducer		69
whole head register	-17
whole head relief valve	-46
whole head reveal	-21		-38
whole head ring	-33
whole head rise	51
whole head riser		-41
whole head rm	78		-16
whole head rock	-47	-40	22
whole head rocks	-43	-64
whole head rod	-26		-12
whole head roller	-22
whole head roof	59		105
whole head room	16	-23
whole head round		-17	-30
whole head row	-14	-17	-29
whole head rtu	40
whole head run	51	16	19
whole head runs	-16	53	-23
whole head rust	-15
whole head s	-12		32
whole head sagging			-36
whole head salon	-43		-40
whole head sand	-36	-61
whole head sash	-31
whole head saw	-20
whole head screen	-14
whole head screw			-82
whole head screwdriver	-25	-21
whole head screws		-56	-67
whole head sealant		-64
whole head sealer	28	-25
whole head seam	-18		80
whole head seams	-20		32
whole head second coat	-25	-69	37
whole head sheathing	21
whole head shed	58
whole head sheet	42	-37	-21
whole head shelf	-39	19	44
whole head shelves	-30
whole head shims	-12	-12	-14
whole head shoe			72
whole head shop	-66	-38	-14
whole head shot	-30	-19
whole head shower	-21	68	44
whole head side	-28	-41	-62
whole head sides	-34	-45	-32
whole head siding		112
whole head silicone			20
whole head sill		49	32
whole head sink	26		26
whole head sir	-16
whole head size		-23
whole head skirting	-19	60
whole head slab	50	48	75
whole head slate	25
whole head sleeve	-28
whole head slider	30	90
whole head slides	-23
whole head slip	-23
whole head slope	-25		38
whole head slopes		-20
whole head smoke	103
whole head snug	39
whole head socket	59
whole head soffit	105
whole head soft	-21	74
whole head soft close	40
whole head somewhere	-31
whole head sorry	-18
whole head spare	24
whole head spins	47
whole head splash	-26
whole head spot	-79	-47	30
whole head spout	-22
whole head spring	-29	27
whole head stain	-76	48
whole head stair	-50	-38	18
whole head stairs	-61	-52	-50
whole head steel	-54		-25
whole head stem	43
whole head step	-15
whole head steps	29	24
whole head stone	-17	-78	24
whole head stop		-29
whole head store	73	-34	-39
whole head stove	-26	-14	-47
whole head straight	-16
whole head strike	-40	29	39
whole head string	-27
whole head strip		-23
whole head stripped			-17
whole head stuck			-15
whole head stud	-15	-30	-23
whole head studs	-41	-50	-18
whole head subfloor	30		56
whole head supposed	-25	31
whole head sweep	-31	-47	-18
whole head sweet	-17
whole head switch	68
whole head t	80
whole head tag	-17
whole head tap	-24	34
whole head tape	-16	22	38
whole head tee	-26		-29
whole head template		-17
whole head thermostat	30	103
whole head thinset		-23
whole head threshold		49	37
whole head tile		44	36
whole head tile's		43
whole head tiles		48	47
whole head toe kick	-32
whole head toilet	-23		28
whole head too deep		-12
whole head too high		-40
whole head too long		-15	-29
whole head top			-19
whole head total	-13
whole head track	-59
whole head transition		24
whole head trap		32	52
whole head travelers	-23
whole head tray		79	49
whole head tread	34	18
whole head treads	-27	27
whole head trim	66	35	33
whole head truck	-14
whole head tub	80
whole head tub spout			22
whole head tub's	-14		60
whole head twice		-20
whole head unit	-42	-16	-23
whole head uppers		-41	-56
whole head upstairs		45	16
whole head us	29	-26
whole head valve		-88
whole head van	-21	-19
whole head vanity	-21		-53
whole head vent	55	37
whole head vinyl	26
whole head wall	14		-38
whole head wall bend			-40
whole head wall's	20		-42
whole head walls	-54	-20	-67
whole head want	-35
whole head wants	42	-18	-21
whole head washer	-49	60	-32
whole head waste	24
whole head water	-13	-44	-100
whole head water heater	-35
whole head water's	-13
whole head wax ring	-67
whole head wc	13
whole head weatherstrip	-35
whole head weeping		-26	-16
whole head weight	-15	-20
whole head went	-23
whole head wet		-44	31
whole head white		-46
whole head whoever	-24	-49
whole head wind			-22
whole head window	53	-30
whole head windows	-40
whole head wire	44	40	73
whole head wobble	-25
whole head won't latch	-19
whole head wood		-102	-18
whole head wrong	-13	-35
whole heading +1		-26	-28
whole heading -1	27	-17
whole heading -2	-32	16
whole heading -3	23	16	24
whole heading -4		26
whole heading here-after	46	-26	81
whole kind +1 area	-24		-19
whole kind +1 defect			-13
whole kind +1 finish	-14
whole kind +1 material	-15	-15
whole kind +1 part			-18
whole kind +1 size		-18	-19
whole kind +1 surface	-16	16	-14
whole kind +1 tells	-28		-30
whole kind +1 tool	-15	-31
whole kind +1 verbish	-13
whole kind -1 area	17	-31
whole kind -1 defect	-26	24
whole kind -1 finish	-24	28	-31
whole kind -1 fixture	36	45	30
whole kind -1 material			20
whole kind -1 part	18	26	49
whole kind -1 size	-55
whole kind -1 tells			100
whole kind -1 tool	58	-27
whole kind -1 verbish		39	-21
whole kind -1 word	-17
whole kind -1 work			-16
whole kind -2 area			-15
whole kind -2 defect	-19
whole kind -2 finish			32
whole kind -2 fixture	18	34	-14
whole kind -2 size	20	-15	51
whole kind -2 surface	17		22
whole kind -2 tells	-18	15	-58
whole kind -2 tool	-29
whole kind -2 verbish		-18	-12
whole kind -2 work	-15	48	-24
whole kind -3 area	32	13	-33
whole kind -3 defect	-14	-27
whole kind -3 finish	-24	17	-21
whole kind -3 fixture	30		32
whole kind -3 material		23
whole kind -3 part			14
whole kind -3 size	-19		-37
whole kind -3 surface			26
whole kind -3 tells		-43	32
whole kind -3 tool	-37	22
whole kind -3 verbish			-13
whole kind -3 word	-17		-20
whole kind -3 work	-20
whole kind -4 area		22
whole kind -4 defect			-26
whole kind -4 finish		-32	-24
whole kind -4 fixture	-29	-31
whole kind -4 part	19		-20
whole kind -4 size	-21	-35
whole kind -4 surface			-16
whole kind -4 tells	-21		-27
whole kind -4 tool	12	-16
whole kind -4 verbish		-18
whole kind -4 word		-15	-19
whole kind -4 work		-49
whole kind defect	-12
whole kind finish			-15
whole kind fixture	12		13
whole kind here-after area	38	-59	18
whole kind here-after defect	-15	-48
whole kind here-after finish	-22		-66
whole kind here-after fixture		35	22
whole kind here-after material	50	56	12
whole kind here-after part	32	87	20
whole kind here-after size	-26
whole kind here-after surface	36	37	52
whole kind here-after tells	52	19
whole kind here-after tool		42	-61
whole kind here-after verbish	-35	-32
whole kind here-after word		-40	14
whole kind here-before area		76	39
whole kind here-before defect	62		40
whole kind here-before finish	53
whole kind here-before fixture		14	24
whole kind here-before material	19		39
whole kind here-before part		46	36
whole kind here-before size	74		-14
whole kind here-before surface		61	-28
whole kind here-before tells	-17
whole kind here-before tool		75
whole kind here-before verbish		-30	-18
whole kind here-before word			21
whole kind material		13
whole kind part		13	14
whole kind tells	-13
whole kind tool			-18
whole kind word	-13
whole kind work	-20	39
whole lead a -1	36
whole lead a -2	-17
whole lead a -3	-26
whole lead a here-after	13
whole lead area -1	-26
whole lead area -2	15
whole lead area -4	-13
whole lead area here-before	17
whole lead finish here-before	20
whole lead fixture -2	-21
whole lead fixture -4	-48
whole lead fixture here-before	18
whole lead in here-before	-26
whole lead material -1	-45
whole lead material -2	-38
whole lead material -4	-40
whole lead material here-before	20
whole lead number -3	62
whole lead number -4	40
whole lead number here-after	-26
whole lead number here-before	59
whole lead on here-before	35
whole lead part -1	-19
whole lead part -2	-19
whole lead part -3	-41
whole lead part -4	-27
whole lead quantity -1	14
whole lead quantity -2	-32
whole lead quantity -3	26
whole lead quantity -4	-47
whole lead quantity here-before	42
whole lead role -2	-27
whole lead role -3	-28
whole lead role here-after	23
whole lead size -1	-33
whole lead size here-before	53
whole lead surface -1	-16
whole lead surface -2	24
whole lead surface -3	-13
whole lead surface -4	-15
whole lead surface here-after	-15
whole lead surface here-before	17
whole lead tells -2	-22
whole lead tells here-before	38
whole lead that -1	43
whole lead that -3	-15
whole lead that -4	18
whole lead that here-after	-13
whole lead that here-before	20
whole lead the -1	-47
whole lead the -2	-37
whole lead the -4	-40
whole lead the here-after	15
whole lead the here-before	-25
whole lead tool -1	-50
whole lead tool -2	-21
whole lead tool -3	-21
whole lead tool -4	27
whole lead tool here-before	49
whole lead verbish -1	-36
whole lead verbish -2	14
whole lead verbish here-after	-33
whole lead with -2	16
whole lead with -3	-26
whole lead with -4	-32
whole lead with here-before	32
whole lead word -1	17
whole lead word -3	18
whole lemma be object	-22
whole lemma come subject	-22
whole lemma crack subject	29
whole lemma drip subject	36
whole lemma find object	57
whole lemma get object	-71
whole lemma get subject	-72
whole lemma go subject	28
whole lemma have subject	32
whole lemma hit subject	-16
whole lemma keep subject	-59
whole lemma leak subject	22
whole lemma leave object	32
whole lemma pull subject	-17
whole lemma run subject	-15
whole lemma say subject	28
whole lemma trip subject	57
whole number many many		74	20
whole number many one		-48	-23
whole number one many			-14
whole number one one		15	21
whole opens PREP	-21	-24	-36
whole opens Vmoveb	-20
whole opens Vmovep	-29		-13
whole opens Vmovepp	-18	16
whole opens Vmoves		-16
whole opens Votherb	-25	-14
whole opens Vreturnb		35
whole opens Vsayb		19	-31
whole opens Vseeb	-19	-17
whole opens Vworkb	-27	-25
whole opens Vworkbp	-23	-21
whole opens Vworkbpp		28
whole opens Vworki		-18	14
whole opens Vworkpp	-22	-21	-13
whole opens Vworks	-18		52
whole opens tarea's		31	-14
whole opens tdefect	-17	-15
whole opens tdefectVotherb	-22	28	31
whole opens tdefectVotheri		-40	-32
whole opens tdefectVotherp	-24	-28
whole opens tdefectVotherpp	-13	-27	-33
whole opens tdefectVothers	-21	-38	25
whole opens tdefectVworkbpp		23	-16
whole opens tdefectVworki		-25	-28
whole opens tdefectVworkp		-13
whole opens tdefectVworkpp		-13	-19
whole opens tdefectVworks	-18	28	-30
whole opens tfinish	-17	-22	-20
whole opens tfinishVworkb	-18	36	-13
whole opens tfinishVworkpp	-22	-45
whole opens tfixture	15	23	25
whole opens tfixture's	35	-19	41
whole opens tfixtureVworkb	-30	-15
whole opens tfixtureVworks	-28
whole opens tmaterial		24
whole opens tmaterial's	21	40
whole opens tmaterialVotherb	32	16	78
whole opens tmaterialVworki	18	85
whole opens tmaterialVworks			-33
whole opens tpart	15	20	30
whole opens tpart's		63	42
whole opens tpartVotherb	-20	34	-20
whole opens tpartVothers	-14	-26
whole opens tpartVworkb		-18	43
whole opens tpartVworki	-19
whole opens tpartVworks		29
whole opens trole	-28	-24
whole opens trole's	-32		-62
whole opens tsurface's		-31	-14
whole opens tsurfaceVotherb	-16	-18
whole opens tsurfaceVworkb		-15	-26
whole opens tsurfaceVworki	-14	33	13
whole opens tsurfaceVworks	-30	19	13
whole opens ttool		-22	-23
whole opens ttool's	37
whole opens ttoolVworkb	17	-13	-12
whole opens ttoolVworks		-14
whole opens twork	-19	47
whole opens w			-15
whole opens w's	-24	-35
whole opens wed		-44
whole opens wing		-25	-23
whole opens-with -1	43
whole opens-with -2	27
whole opens-with -4	18
whole opens-with here-after	33
whole part +1 object	-13
whole part +1 opens	-23
whole part +1 subject		-23	-16
whole part +1 subject-late		-26	-19
whole part -1 bare	-14
whole part -1 opens	17	21	16
whole part -1 subject		40	37
whole part -1 subject-late	-52
whole part -2 bare		14	-37
whole part -2 object	-13
whole part -2 subject	19	24	30
whole part -2 subject-late		25
whole part -3 opens		-17
whole part -3 subject-late	27	17
whole part -4 bare		-27	-19
whole part -4 object	-17	-12
whole part -4 opens		25
whole part -4 subject		-13	-25
whole part -4 subject-late			-17
whole part bare			-14
whole part bare area			-16
whole part bare defect	-16	-27	-40
whole part bare finish		54	-54
whole part bare fixture	-19	-33	14
whole part bare material		-15
whole part bare part	29	18
whole part bare size		25	32
whole part bare surface			-21
whole part bare tells	16		21
whole part bare tool		-61	-15
whole part bare word	-21
whole part bare work		85
whole part here-after bare	-23		14
whole part here-after object		21
whole part here-after opens	45	-13	29
whole part here-after subject	-19	28	39
whole part here-after subject-late		-71
whole part here-before object	-20	50	-15
whole part here-before opens	16	40	57
whole part here-before subject	19	21	26
whole part here-before subject-late		-30	13
whole part object	-18		-13
whole part object area	19
whole part object finish	-22		-23
whole part object part			13
whole part object tells	-27
whole part object tool			-24
whole part object verbish	-12	-16
whole part object word	-20	-14	-19
whole part object work	-16
whole part opens area	12	39
whole part opens defect			20
whole part opens finish	30		29
whole part opens fixture	51	52	51
whole part opens material		15	16
whole part opens part		28	13
whole part opens size	-19	-18
whole part opens surface		30	57
whole part opens tells		-26	-19
whole part opens tool			-46
whole part opens verbish	-14		-18
whole part opens word		-27	-13
whole part opens work		16
whole part subject		16	18
whole part subject area	15	20
whole part subject defect	-15	-71	13
whole part subject finish		29
whole part subject fixture		17	14
whole part subject material			13
whole part subject size		-45
whole part subject surface		27	25
whole part subject tells		20	-17
whole part subject tool	28	38	21
whole part subject verbish	14
whole part subject word		16	23
whole part subject work	-25	-16
whole part subject-late area	-14		-19
whole part subject-late defect		-60	28
whole part subject-late finish			27
whole part subject-late fixture			-13
whole part subject-late material	-14	57	13
whole part subject-late part	-22	43	58
whole part subject-late size	-33
whole part subject-late surface		-26	-20
whole part subject-late tells			34
whole part subject-late tool	-23	38
whole part subject-late verbish	-17	55
whole part subject-late word		-19	-24
whole person	-22	-21
whole points both +1			-18
whole points both -2			-20
whole points both -3			48
whole points both -4			-36
whole points both bare			-29
whole points both here-before			21
whole points both object		-17	-15
whole points both opens			44
whole points both subject			-26
whole points both subject-late			59
whole points em -1		22	-27
whole points em -2		-61
whole points em -3		65	-59
whole points em -4		-37	52
whole points em object		19	-18
whole points em opens			13
whole points em subject		-27
whole points it +1		-27	-31
whole points it -1			30
whole points it -2			14
whole points it -3		17
whole points it bare			-37
whole points it here-after		-33	-56
whole points it here-before		-16
whole points it object		-18	-14
whole points it opens		29
whole points it subject		18	55
whole points it subject-late		-14	-33
whole points none -4		-14	-22
whole points none here-after		18	23
whole points none here-before		33	27
whole points none object			-19
whole points none opens			15
whole points none subject		14
whole points one +1			-37
whole points one -1		49	25
whole points one -2		-16	62
whole points one -3		13
whole points one -4		31	29
whole points one bare		-45	-42
whole points one here-after		-31	-39
whole points one here-before		47	-35
whole points one object			17
whole points one opens		58	-51
whole points one subject		41	34
whole points one subject-late			112
whole points that +1		-24	-25
whole points that -1		29
whole points that -2		37	34
whole points that -4		-23	-17
whole points that bare		-26	-101
whole points that here-after		-19
whole points that here-before		51	27
whole points that object			15
whole points that opens			-39
whole points that subject		22	30
whole points that subject-late		28	29
whole points them +1		-20	-16
whole points them -1		23	46
whole points them -2		-21
whole points them -3			-24
whole points them -4		-31	-31
whole points them bare		-30	37
whole points them object			29
whole points them subject		18	-72
whole points them subject-late		-23
whole points they +1		-23	-19
whole points they -1		22
whole points they -2		33
whole points they -3		-17
whole points they -4		-17
whole points they bare		57
whole points they here-after		28
whole points they object		-14
whole points they subject-late		26
whole points this -2		57
whole points this -4		34
whole points this object		51
whole points those +1		24
whole points those -1		54
whole points those -2			26
whole points those bare		47
whole points those object		15	24
whole points those opens		-26
whole points those subject		-62
whole points those subject-late		67
whole prep about	-25	-41
whole prep above	-41	-42
whole prep after	-28	-34
whole prep along		-54	-42
whole prep around	-25	-15	-55
whole prep at	-27	-18	-37
whole prep before	-14	-14
whole prep behind	52		-19
whole prep below			-24
whole prep between			-38
whole prep by	-17	-62	-65
whole prep down	-34	22
whole prep for			-25
whole prep from	-50	-45	-42
whole prep here-after at	-18
whole prep here-after by	-27
whole prep here-after for		-71
whole prep here-after from	-61
whole prep here-after in	25	-75	-26
whole prep here-after of		21	20
whole prep here-after on	54
whole prep here-after to		17
whole prep here-after with	-51	46	-66
whole prep here-before behind	32
whole prep here-before in			-32
whole prep here-before of	17
whole prep here-before on	-18
whole prep here-before with	-72
whole prep in		-32
whole prep into			-64
whole prep near	19	-53	-23
whole prep of	-17
whole prep off		-46
whole prep on		-14
whole prep other about	-24	-40
whole prep other above	-44	-42
whole prep other after	-24	-37
whole prep other along	-19	-38	-46
whole prep other around	-26	-15	-44
whole prep other at	-28	-15	-36
whole prep other before	-14
whole prep other behind	35	-19	-18
whole prep other below			-24
whole prep other between	-21		-37
whole prep other by	-18	-62	-65
whole prep other down	-25	22
whole prep other for			-24
whole prep other from	-31	-51	-42
whole prep other in		-30
whole prep other into			-64
whole prep other near	-27	-58	-23
whole prep other of	-21
whole prep other off		-42	37
whole prep other on	-12	-16
whole prep other out		-27	30
whole prep other over	-13	-43	-21
whole prep other past	-26
whole prep other through			82
whole prep other to	-18	-18	-30
whole prep other toward	-34	-42
whole prep other under	16	-36	-18
whole prep other up		-44	34
whole prep other with	-20	-43	-32
whole prep other without		-34	-20
whole prep out		-27	33
whole prep over		-51	-21
whole prep past	-26
whole prep through	53		81
whole prep to	-20	-15	-29
whole prep toward	-40	-42
whole prep under	21	-36	-22
whole prep up	13	-42	28
whole prep with	-26	-33	-40
whole prep without		-34	-20
whole rank after 2	-14	22	-13
whole rank after 3			-16
whole rank after 4	-22		-22
whole rank before 1		12
whole rank before 2	-12
whole rank before 3	-12
whole rank before 4		-16	-41
whole says modal		-22	-20
whole says owed		15
whole sentences -1	-48	-41	-33
whole sentences -1 bare	-30	-18	-30
whole sentences -1 object	-30	-34	-12
whole sentences -1 opens	-28	-34	-38
whole sentences -1 subject	-21		13
whole sentences -1 subject-late	-28	-47	-64
whole sentences -2	-34	-53	-39
whole sentences -2 bare	-12	-16	-21
whole sentences -2 object	-22	-29	-24
whole sentences -2 opens	-23	-60	-24
whole sentences -2 subject	-23	-29	-35
whole sentences -2 subject-late		-27	-18
whole sentences 1	-16	-29	-12
whole sentences 1 bare	-15
whole sentences 1 object	-13	-15	-12
whole sentences 1 opens	-12	-43	-12
whole sentences 1 subject		-28
whole sentences 1 subject-late		-16
whole size 2		15
whole sort PREP	-15		-30
whole sort Vmeasurei			-20
whole sort Vmoveb		24
whole sort Vmovei	-14
whole sort Vmovep	-22	-32
whole sort Vmovepp			-29
whole sort Vmoves	-21	-23	-23
whole sort Vneedb	30	-37
whole sort Vneeds		-33	-27
whole sort Votherb	-34
whole sort Votheri	-14	-47
whole sort Vreturnb	-19
whole sort Vsayb	-27	32	-35
whole sort Vseeb	-27	-16
whole sort Vworkbp	41	16	18
whole sort Vworkbpp	-33		-47
whole sort Vworki	-16
whole sort Vworkpp	-31	-34	-15
whole sort Vworks	-21	29	42
whole sort w	-13	-14	-16
whole sort w's	-19		-14
whole sort wed	37	-24	18
whole sort wing			-29
whole stands after	-16	-24	-16
whole stands after 0 of 0	-23	-20	-20
whole stands after 0 of 1		-20	-13
whole stands after 0 of 2	-12	-25
whole stands after 0 of 3	-14	-17	-13
whole stands after 1 of 1	-13	-24	-13
whole stands after 1 of 3		-12
whole stands after has 0	-33	-21	-21
whole stands after has 1	-14	-24	-17
whole stands after has 2	-15	-27	-14
whole stands after has 3	-14	-23	-16
whole stands after points both			-17
whole stands after points it		-19	-28
whole stands after points it's	-22	-16	-28
whole stands after points nothing	-15	-25	-12
whole stands after points one		-33	-44
whole stands after points that		-21	-14
whole stands after points that's		-14
whole stands after points them			-14
whole stands after points those		-15
whole stands before 0 of 2		-24	-21
whole stands before 0 of 3		-34
whole stands before 1 of 0	-44		-19
whole stands before 1 of 1	13
whole stands before 1 of 2		23
whole stands before 1 of 3		31
whole stands before 2 of 0	-13	-18
whole stands before 2 of 1	-17	13
whole stands before 2 of 2	-14		19
whole stands before 2 of 3		14
whole stands before 3 of 0	-16	-12
whole stands before 3 of 1	-16
whole stands before 3 of 2			28
whole stands before 3 of 3		-14	38
whole stands before 4 of 0	-22	-16	-41
whole stands before 4 of 2	-14
whole stands before 4 of 3	26
whole stands before has 0	-62	-25	-30
whole stands before has 1		12
whole stands before has 3			16
whole stands before points both		-46
whole stands before points em			-55
whole stands before points it			17
whole stands before points it's	56		21
whole stands before points one		32	17
whole stands before points ones			51
whole stands before points that			22
whole stands before points that's		12
whole stands before points them		-33
whole stands before points they're		-46
whole stands before points this		53
whole stands before points those		30	-38
whole stands here		28	27
whole stands here 0 of 2		34	31
whole stands here 0 of 3	32	29	42
whole stands here 1 of 2	17		-20
whole stands here 2 of 3	-17		-33
whole stands here 3 of 3	-20
whole stands here 4 of 3	-20		-22
whole stands here has 2		30	28
whole stands here has 3	14	25	23
whole stands here points both			21
whole stands here points em			59
whole stands here points it		-13
whole stands here points it's	67	40
whole stands here points nothing		31	29
whole stands here points one		31
whole stands here points that		21
whole stands here points that's		55
whole stands here points them		51	-24
whole stands here points they		71
whole stands here points those		-37
whole subject none -1	14
whole subject none here-after	15
whole subject own +1	-14
whole subject own -1	-17
whole subject own -3	-20
whole subject own -4	-20
whole subject own here-before	16
whole subject person -1	-15
whole subject person -2	-25
whole subject person -3	-22
whole subject person -4	-44
whole subject person here-before	16
whole subject pointer +1	-26
whole subject pointer -1	33
whole subject pointer -2	26
whole subject pointer -3	31
whole subject pointer here-before	-14
whole subject tells -1	12
whole subject tells -3	69
whole subject tells -4	-28
whole told as bought before	-29	-38	-12
whole told as done after		-29
whole told as done here		40
whole told as fixed after		-39
whole told as fixed before		-15	36
whole told as fixed here			-26
whole told as have before	-41		-42
whole told as have here	18	30
whole told as need after		-21	-15
whole told as need before	-17	-65	-73
whole told as need here	13	41
whole told as open after		-29	-23
whole told as open before		30
whole told as open here			47
whole told as ordered before	-13
whole told as used after	-12
whole told as used before		-15	-36
whole told as used here	19	18	17
whole unit none defect	-12
whole unit none tells	-13
whole unit none word	-12
whole unit none work	-20
whole use buy	-17
whole use have		41	25
whole use measure			-31
whole use move	-20
whole use need	-19		32
whole use other			15
whole use return	46
whole use say		-16
whole use see	-26		-39
whole use use	-33	-48
whole where +1	-14		-14
whole where -1		14	13
whole where -4	-13		-17
whole where here-after			18
whole where here-before	13	27	23
whole word air			-13
whole word anybody		-15
whole word anything	-22	-19
whole word apt			-34
whole word arm	-24
whole word b			13
whole word back	48	-13
whole word bad	-30	-49	-18
whole word bag	-36
whole word bath			-14
whole word bed	67	-38	20
whole word bedroom	-39
whole word bench	22	50
whole word big	52	-33
whole word bled	22	-23
whole word board	18	-25	34
whole word boards	90	117	-13
whole word bottom		25
whole word bowl	35
whole word box		30
whole word br	-34	-24
whole word button	-14
whole word c	-44	44	-27
whole word cab			-13
whole word card	-48
whole word center	-13	-29
whole word church	-65
whole word code		-30
whole word coffee	-27
whole word cold		47	-36
whole word color	26	-31	-39
whole word counter		122	22
whole word cover	36	61	-46
whole word cut			-29
whole word defect	-14
whole word dentist	-28
whole word different	-26	-13
whole word dog	31
whole word double	-13		-12
whole word draft	25
whole word drum	16
whole word dry	34	44	-14
whole word due		-29
whole word electric		18
whole word else	-16	-13
whole word end	-16	13	-36
whole word ends		-24
whole word except	-40	-60	-19
whole word exhaust	27
whole word extra		30	-33
whole word face		-46
whole word factory		-40
whole word far		-26
whole word fella	-40	47
whole word finger	-18	-19	19
whole word finish	-13		-17
whole word first	42	63
whole word float	-33
whole word fourth	19	24
whole word free	-28
whole word fresh	-14
whole word front		31	34
whole word frt	-14
whole word full		-40	-21
whole word gary		-12
whole word gauge	-33
whole word get		-14
whole word go	-40
whole word god	27		17
whole word goes	-24	-35
whole word going	-14
whole word gone	-15
whole word hair	-26	-14	-15
whole word half	-19
whole word hand		26	-15
whole word hanging	-23
whole word hard		-16	13
whole word head	39	55	17
whole word height	-22		-45
whole word hello			-23
whole word hot	-16	-32	82
whole word house	-36	-44
whole word hvac	-17
whole word inside	-21		-18
whole word instead	-20
whole word itself	-23	131	54
whole word job	12	37	-24
whole word kit	-17
whole word last	29	-63	-36
whole word layers	-53
whole word lead	20
whole word lean	-51
whole word left			-29
whole word level	-26	-44	-30
whole word lid	-24		25
whole word linen	-20
whole word list	-19	-27	-29
whole word little			-17
whole word longer	-20
whole word look		-17
whole word luis	-17
whole word machine	-16		27
whole word make	29	-24
whole word manny		-29
whole word me			-27
whole word meantime			-33
whole word middle		-18	-14
whole word mine	-24	-20
whole word mr	19		32
whole word n	-22		-31
whole word near	-18
whole word needs	-21	-17	-13
whole word new	-15	-26	-12
whole word nice	-20		-17
whole word number			22
whole word off	-18	-34	-17
whole word old	-28	28
whole word open	95	59
whole word other	-31
whole word ours	-22
whole word out		121
whole word own		-13
whole word paper	-40	-31	22
whole word patch	-28	36	22
whole word permit		-27
whole word piece		18
whole word place	-38		-66
whole word powder	111
whole word problem		-17
whole word proper	-22
whole word push	-36
whole word quantity	28	-61	20
whole word quick		-34
whole word quiet	-14	-13
whole word r	-31		-30
whole word rain		-30	-30
whole word ray		-47
whole word re		52
whole word real	-26
whole word rear	-15		-37
whole word return	-19
whole word right	-21
whole word ring	-32	-12
whole word rise	51
whole word rm	53	-63	-85
whole word room		-36	-37
whole word round		-36	-30
whole word row	-17	-42	-13
whole word run	41	16	18
whole word s	-15		24
whole word same	-25	-17	34
whole word scrap	-35
whole word second	-33	-46	27
whole word sheet	39	-37	-21
whole word sir	39
whole word size		-23
whole word slip	-30
whole word slow	57		13
whole word something	-42
whole word somewhere	-31
whole word sorry	-19
whole word spare	15		-14
whole word spins	32
whole word spot	-77	-68	30
whole word steel	-52		-20
whole word stock	-24
whole word stop		-29	15
whole word store	73	-34	-39
whole word straight	-20	-36	-17
whole word street	-14	-16
whole word strip		-23
whole word strong		-18
whole word supposed	-25	31
whole word svc	-13
whole word sweet	-17
whole word t	76
whole word tag	-17
whole word template	-23	-19
whole word test		-55
whole word thank			-13
whole word third	-14		23
whole word top			-12
whole word total	-14
whole word twice	-14	-20
whole word under		-26	-25
whole word unit	-38	-62	-46
whole word up		-29
whole word upper	-29
whole word us	27	-26
whole word want	34	-46
whole word wants	23	-30	-21
whole word warm	-14
whole word waste	24
whole word weight	-15	-44
whole word went	-23
whole word whoever	-24	-49
whole word wind			-21
whole word wrong		-23
whole word zone	-28
word a		23	16
word about		-49
word again		20	-47
word air	-42	-30	-30
word alarm	-16	20
word all			-37
word alone	-23	-31
word altogether	-20
word an		29
word and		22	-15
word another		70
word any		48
word anybody		-82
word anyhow	-34	-30
word anything		-60
word anywhere	-13
word apt			-33
word area		-36	-52
word arm		32
word around		13	-32
word arvo		-60
word aside	-28	-85
word at			-24
word b	-17	-18	-18
word back	103	-24
word bad	-16
word bag	-41	-24
word band		27
word bare	-65	43	-13
word bath	24	-16
word bead		14	-61
word bearing	40
word bed	-20		-18
word bedroom		70
word behind		116	77
word bench	87	16
word better		-58
word big	-48	19	-30
word bled	-36
word board	38	60	50
word boards	122	60	75
word bolted			36
word book		-23
word booked		-53
word bottom		31
word bout		-46
word bowl		-25	23
word box	-28		31
word boxes	16	28	17
word boy	-25	-36
word br	-38
word burn	22
word c		-19	-32
word card	-21		-14
word case	19
word cat	-29	-28	-12
word center	-19		-22
word chunk			12
word church	-28
word clean			39
word close	-36
word cock		-35
word code	-19
word coffee		-15
word cold	-13	-17	-17
word color	-33		-90
word coming	-13
word count		-15
word counter	18	16	16
word course	-43	33	16
word cover	56		-45
word ctr			34
word cut	19	44	48
word dale		21
word dark		39
word dave		-65
word defect	-23	-14
word dentist	-64
word different	-44	19
word dime	-12	-12
word dining	-30	21	14
word dinner	-18
word disp	24
word do		-27
word dog	-34
word double	-21		-13
word down	14	-49	50
word draft	-30
word drum		-18	21
word dry		21	39
word due		22
word dust	-31
word e	-52	-29
word earliest		47
word east	22
word eighth		-20
word either	-52	-26
word electrical	43	27
word else		-38
word em		-35
word end	31
word ends			-30
word every			-17
word everywhere	40	-46
word exam	50
word except	-25	-44	-17
word extra	-24		-32
word face	-13	-31
word factory	-41
word far	-14	-54	-49
word fault		15
word fell	22
word fella	-49	-22
word fifth		-14
word final	28	55
word fine			-18
word finger	-27	-17	54
word finish	-29		-21
word fire	-65	34	-12
word first	33	-16	46
word flip		20
word float	73
word for			15
word free	-13	-53	27
word fresh	32	-18
word from		-19	-14
word front	-22	54
word frost	-13
word frt	13
word full		36
word furniture		41
word gary	-62	-22	-21
word gauge	-27
word glued			17
word go	-22		-32
word god	36	-34	-31
word goes	-27	22
word going	46	-58
word gone		-24	15
word good			-15
word guide	37
word guillotine	-15
word guy		-26
word hair	-26	-37	-16
word half		-45	54
word halfway	-22
word hand	-12	-77
word hang		21
word hanging		17	66
word happy		-19
word have		-59
word head	23	-19	-13
word height		-22	28
word hendersons	-18		-15
word her		-14	24
word herself		14
word him		38
word his		-23
word holding	-41
word home		-63
word hot	42	50
word house		-35
word hung	-14		-49
word hvac		-80
word in		-38
word inside	-24	13	-19
word instead	39
word into			26
word iron	39
word is		-61	26
word it			-18
word it's		36
word itself		16
word job		-20	-24
word kit	52	28
word lads		-51	18
word last	-50	-61	13
word layers	42		23
word lead	57	13	74
word leaf	-32
word lean	16	-62
word led		30
word length	-13	-67	-41
word level	-38	-15	-32
word lid	48	17	27
word linen		17
word lint	-36
word list			30
word little	-30	-61	-50
word load	-18		-17
word longer	-23		-14
word loop	17	12	58
word lower	-26
word luis		-31	-24
word lunch		-21	-41
word m		33
word machine	51	-41	-59
word make	39	42
word manny		-22
word mark		50	-36
word me	-14	-18
word means		-15
word metal		13
word mid	-18
word middle	-31	-33
word mind	-13	-35
word mine		-46
word mouse	20
word mr	-36		-19
word mstr	16
word my		-50
word myself	16	-29	24
word n			-62
word near	-20	38	-23
word needs	-16
word new	-19		13
word news	-17
word next		-29
word nice	-21		-69
word no			-12
word noon			-82
word north	19	-25	-20
word nos	-19		-25
word now			-31
word nowhere	16
word number			13
word o	-20		-18
word oc			-25
word of		18	20
word off		-31
word offset	-13
word oil		-39
word old	23	-30
word open	42	57	-36
word order		-21
word oscar		-97
word other	-112	20
word ours	-13	-28
word out		-21	-34
word outta		-28
word over	-24
word own		-13
word p		-53
word pack			34
word parlor	38
word part	-15	49	13
word patch	36	34	31
word people	-22	24
word pictures		13
word piece		28
word pieces		41
word place	-17	-12	-51
word please		61
word powder	102		14
word press	25
word pressure			-50
word problem		-18
word profile	-14
word proper	-17
word pulled		32
word put		-37	-39
word quantity		19
word quick		-31
word quiet			-25
word r	51	-16	-34
word rain	-48	-47
word raw		-22	-25
word ray	-19	-42
word re	-35	-49
word real	-18
word rear	25
word rental			-38
word replacement		23
word return			41
word rick		-13
word right	20		-13
word ring	20		47
word rings	25
word rise	-36	15	-17
word rm	14		-65
word roll	16	33
word room	-19	12	-13
word roots	-55
word round	-48		-17
word row			-16
word rubber		41	81
word run	17	42	-13
word rung		-12
word runner		65
word running	-23
word s	-30		-53
word same	-55	-34	-30
word sample		47
word sanded			-14
word seal		64
word second		16
word sheet		-29
word sheets	33		40
word shows		-29
word site	-15	-19
word size	-38	-30
word slid	35
word slide	57
word slip	-42
word slow		-14	-46
word small		-20
word sock	-14
word socks		-19
word some		28
word something	-31
word somewhere		18
word soon	28
word sorry	-14
word spare	-44	44	-65
word spec	-37
word spin	-70
word spins	18	38
word spot	-67	66	-72
word start		-29
word static	22
word steam	22		-17
word steel	19	54	-17
word stick		-17
word still		40
word stock	48
word stop	-14		44
word store	-20	-18
word straight	-21	-17	-47
word street	74	18	-57
word strip		16	22
word strong		-18
word suite	36		-13
word sun		-17
word supposed		-37
word sweet		-12
word t		-14
word template	-24	44	22
word test		22	16
word that		18	19
word the		41	12
word them			56
word then		-28
word there		27
word thing		-47
word third	43	-15	-38
word this		-28
word those		22	-28
word through		-20	-41
word time		-40	-57
word tin		-38
word tip			-28
word top		19
word total			-23
word touch		46
word tube			31
word tubes	45
word twice	33		-45
word type		21
word u		-12
word under		34	41
word unit	-49		-19
word units		31
word up	-47	56	19
word uphill	-22
word upper	15	-19	69
word upstand		36
word us	-25	-20
word wait		46
word walk	-28
word wants	-27	-28
word warm	-27
word waste	69
word wedge	-16		18
word weight		12	-17
word went		-18	-21
word wheel	35
word whenever		-62
word whoever	-29		-20
word whole			-42
word wind	-64	19	-18
word with			-21
word work			-25
word wrap			-18
word wrong	-51	-26	-28
word x			-60
word yet		-30
word you'd	-65
word zone	-30		50
`;
