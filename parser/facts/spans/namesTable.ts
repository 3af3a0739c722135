/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after at defect	-35
after at part	93
after at surface	53
after at word	-28
after by defect	-37
after by fixture	-34
after by part	19
after end defect	-13
after for defect	-27
after from defect	30
after in defect	-40
after in fixture	15
after in material	61
after in part	83
after in surface	19
after on defect	-50
after on material	76
after on surface	29
after on word	-21
after quantity defect	-32
after quantity material	-16
after quantity part	46
after quantity size	41
after quantity surface	-13
after quantity word	-42
after term area	36
after term defect	-12
after term finish	-34
after term fixture	70
after term size	19
after term surface	-33
after word area	95
after word defect	-38
after word finish	-31
after word material	12
after word surface	25
after word tells	-47
after word verbish	27
article a	-24
article the	24	19	12
as ruled all far	61	75	62
as ruled all far+here		37
as ruled all far+phrase		24	20
as ruled all here	44	28	25
as ruled all pair	81	40	27
as ruled all told		15	26
as ruled none far	-18	-38	-22
as ruled none here	-13
as ruled none pair		18	25
as ruled some far+phrase		14
as ruled some here	37	24
as ruled some pair		34	12
as ruled some phrase		14
as ruled some told		13	-18
behind about here-after	-19
behind about here-before	50
behind at +1	-42
behind at -1	24
behind at -3	-20
behind at -4	-35
behind at here-before	39
behind behind -2	-16
behind behind -3	-13
behind behind -4	-15
behind behind here-after	25
behind behind here-before	18
behind by +1	-43
behind by -1	39
behind by -3	-72
behind by -4	47
behind by here-after	-30
behind by here-before	77
behind down here-before	23
behind end -1	18
behind end here-after	-12
behind for -1	91
behind for -3	35
behind for -4	-49
behind for here-after	-99
behind for here-before	-30
behind from +1	-24
behind from -1	13
behind from -2	-33
behind from -4	25
behind from here-after	-34
behind from here-before	53
behind in -1	20
behind in -3	-35
behind in -4	-46
behind in here-after	18
behind mark +1	-14
behind mark -1	-45
behind mark -2	76
behind mark -4	-29
behind number +1	-21
behind number -1	25
behind number -2	-21
behind number -3	-22
behind number -4	-32
behind number here-after	18
behind of +1	-19
behind of here-after	14
behind off +1	-32
behind off -1	-53
behind off -3	-15
behind off -4	71
behind off here-after	13
behind on +1	-28
behind on -1	23
behind on -3	-14
behind on here-after	13
behind on here-before	15
behind out -1	-23
behind out -2	-28
behind out -3	44
behind out -4	-30
behind out here-before	36
behind over here-after	53
behind quantity +1	-40
behind quantity -2	-21
behind quantity -3	23
behind quantity here-before	35
behind short +1	-12
behind short -1	-68
behind term +1	-12
behind term here-before	28
behind through here-after	45
behind to here-before	34
behind up -1	-18
behind up -2	41
behind up -3	-37
behind up -4	-26
behind up here-after	-16
behind up here-before	50
behind with +1	-25
behind with -1	46
behind with -2	-16
behind with -3	-14
behind with -4	-17
behind with here-after	-40
behind with here-before	37
behind word +1	-20
behind word -2	18
behind word here-before	14
between 	21
between are	-22
between be	20
between get	24
between get a	-36
between has a	33
between have	60
between is	34
between still	59
between were	18
by far	-12	-17	-16
by far lacks none 0	22		-18
by far lacks none 1	-19	-35	-29
by far lacks none 2	-19	-16
by far lacks points 0		14
by far lacks points 1	35		-27
by far lacks points 2	-30	-18
by far lacks points 3	-23	-13	24
by far+here lacks none 1			-16
by far+here lacks none 2	-12
by far+here lacks none 3	-19	-16
by far+here lacks points 1		14	23
by far+here lacks points 2	30		23
by far+here lacks points 3	54	16	-29
by far+phrase		12
by far+phrase lacks none 0		42	39
by far+phrase lacks none 3		30
by far+phrase lacks points 0		-37	50
by far+phrase lacks points 1		24
by far+phrase lacks points 2		41	-34
by here	17
by here lacks none 1	21	43	33
by here lacks none 2	26	-15
by here lacks none 3		-18	-24
by here lacks points 1	-23
by here lacks points 2	-21	-20	-22
by here lacks points 3	-14	-29	-42
by pair		28	23
by pair lacks none 2		35	30
by pair lacks none 3	14	25	19
by pair lacks points 2		28
by pair lacks points 3		15	15
by phrase lacks none 0		-18
by phrase lacks none 2		16
by phrase lacks points 0			-18
by phrase lacks points 1			-14
by told lacks none 0			-21
by told lacks none 1		-17
by told lacks points 0			-24
by told lacks points 1			12
by told lacks points 2		-15	24
by told lacks points 3			65
counted bare	19	27	17
counted count	28	54	-17
counted current	17		16
counted length		-14	-24
counted pressure	-35
counted time	-16	-22	15
counted voltage	34
counted volume	-33	32
counted weight	-23
does add far+phrase		48
does add here		15
does add kind material		88
does add kind part		23
does add kind word		-36
does add word		-30
does ask 		-27
does ask far		-40
does ask far+here		26
does ask far+phrase		45
does ask fixture		-16
does ask here		-37
does ask kind area		52
does ask kind defect		-17
does ask kind finish		-16
does ask kind fixture		-30
does ask kind part		33
does ask kind surface		-12
does ask kind verbish		-16
does ask kind word		44
does ask material		17
does ask pair		77
does ask part		24
does ask surface		-61
does ask told		-29
does ask word		28
does be defect		-38
does be finish		18	-23
does be fixture		36	29
does be material		17
does be part		16	-17
does be size		-24
does be tells		-44
does be verbish		-14
does blow far			66
does bolt far			56
does bolt far+here			-51
does bolt here			-37
does bolt kind material			-30
does bolt kind word			-34
does book far		-25
does book far+here		43
does book far+phrase		-49
does book kind word		72
does book phrase		-18
does book told		27
does box 			-24
does box far		44
does box far+here		-21	-20
does box far+phrase		-21
does box here			24
does box kind area			-24
does box kind fixture		44
does box kind material		33	70
does box kind part		34
does box kind verbish		-28
does box kind word		-22
does box pair		52
does box phrase		-16
does bring area		-35
does bring defect		-18
does bring far		-17
does bring far+here		18
does bring far+phrase		33
does bring fixture		-20
does bring here		-18
does bring kind area		-33
does bring kind defect		-22
does bring kind material		42
does bring kind size		-17
does bring kind surface		16
does bring kind tool		44
does bring kind verbish		27
does bring kind word		-23
does bring material		29
does bring pair		21
does bring phrase		27
does bring told		-14
does bring tool		28
does bring verbish		30
does buy 		-42
does call area		-13
does call far		-20
does call far+here		-39
does call far+phrase		49
does call fixture		-17
does call here		38
does call kind fixture		-21
does call kind material		31
does call kind part		32
does call kind word		53
does call material		25
does call pair		100
does call phrase		21
does call told		-24
does call verbish		-18
does call word		48
does cap far+here			61
does cap here			-18
does caulk here			29
does change 		-23	30
does change defect			-17
does change far		28	-29
does change far+here		83	15
does change far+phrase			31
does change here			-25
does change kind area			28
does change kind defect		-31
does change kind material			53
does change kind part		70	13
does change kind surface		-14
does change kind verbish		50
does change kind word			-22
does change material			55
does change pair		-30
does change phrase			-31
does change told		-15	56
does change word			-31
does check 		36	-12
does check far		-46	-28
does check far+here		18	13
does check here			51
does check kind defect		-24
does check kind material		-12
does check kind part		-18
does check kind word		48
does check told		29
does check word		-22
does clean 			24
does clean far		14	-24
does clean far+here			75
does clean here			-31
does clean kind area			-24
does clean kind defect			-20
does clean kind part			52
does clean kind word		63	42
does clean material			-42
does clean pair			22
does clean part			52
does clean told			26
does clean word			14
does clear far			21
does close 			-16
does close far		-26	-25
does close far+here		32
does close far+phrase		47
does close here		17
does close kind defect		-19
does close kind fixture			-12
does close kind part		-41
does close kind surface		24
does close kind verbish		39
does close kind word		-60
does close material		-28
does close surface		49
does come area		50
does come defect		-14
does come far		-19	-13
does come far+here		-21	-21
does come here		19	-21
does come kind area		-18
does come kind defect		-14
does come kind fixture		-25
does come kind material		20	-14
does come kind part			-20
does come kind size		-18
does come kind surface		-15
does come kind tells		-33
does come kind tool		-24
does come pair		-38	-16
does come part		-44
does come verbish		49
does come word		40
does complete far+here			-17
does complete here			-25
does complete kind material			-69
does cover here		13
does cut 		-28	-23
does cut area			-16
does cut defect		80
does cut far		27	-13
does cut far+here		24
does cut far+phrase		46
does cut fixture			-28
does cut kind area		-51
does cut kind defect		93
does cut kind material		41
does cut kind part		-52
does cut kind size		38	-14
does cut kind surface		33
does cut kind tool			43
does cut kind verbish		31	16
does cut kind word		-32	20
does cut pair		14	74
does cut part		-37	-13
does cut phrase		-18
does cut surface		61	20
does cut told			-28
does cut verbish		44
does cut word		-48	16
does dig 		-29
does dig far		34	15
does dig far+here			-56
does dig here			43
does dig kind surface			15
does dig kind word			-26
does dig told		-14
does do 		37
does do defect		-19
does do far		-31	-18
does do far+here		42
does do far+phrase			-15
does do fixture		-27
does do here		-48	37
does do kind area		-20	21
does do kind fixture			19
does do kind material		-12
does do kind part		35	19
does do kind surface		-21	21
does do kind verbish		-20
does do kind word		-47	-23
does do pair		-25	21
does do part		35
does do phrase		-25
does do told		46
does do verbish		-28
does do word		-31
does drill far			-21
does drill far+here		31	-18
does drill here			25
does drill kind material		39
does drill kind part			-35
does drill kind surface			28
does drill material			19
does drill part			14
does drill surface			15
does drop 		-30
does drop far		76
does drop far+here		40
does drop kind material		24
does drop told		-22
does dry 		-19	-14
does dry far		15
does dry far+here		-36	66
does dry far+phrase			-46
does dry here		-37	-20
does dry kind area		38
does dry kind defect		-17
does dry kind fixture		64	17
does dry kind material		-50
does dry kind part		-13	-22
does dry kind surface		-25	-47
does dry kind verbish		14	-42
does dry kind word		-36
does dry pair			-56
does dry phrase		-13
does dry told		-13
does file far		-25
does fill 			-14
does fill defect			24
does fill far+here			114
does fill here		21	-27
does fill kind defect		54	25
does fill kind fixture		-50
does fill kind material		-23	49
does fill kind surface		66
does fill kind verbish		26
does fill kind word			20
does fill material			27
does fill pair			-18
does fill surface		55
does find 		-15
does find far+here		24
does find here		13
does find kind material		55
does find kind word		-19
does find phrase		-31
does find told		16
does find word		22
does finish 		36
does finish area			-31
does finish far		-20
does finish far+here		19
does finish far+phrase		-30
does finish here		55	-39
does finish kind area			-14
does finish kind fixture		-20	-16
does finish kind material			-19
does finish kind part		-19	-43
does finish kind size			38
does finish kind surface		50
does finish kind word		15
does finish material			-27
does finish phrase		20
does finish told		31
does finish word			38
does fit far		64
does fit far+here			-30
does fit here			41
does fit kind part			30
does fit kind verbish			22
does fit kind word			27
does fix 			-21
does fix far		69
does fix far+here			43
does fix far+phrase		-35
does fix here		15
does fix kind defect			35
does fix kind material			-14
does fix kind part		15	13
does fix kind surface			45
does fix kind verbish		79
does fix kind word		-18	35
does fix pair			43
does fix phrase			-15
does fix told		-15
does frame here			21
does fre far			15
does fre far+here			16
does fre fixture			19
does fre here			22
does fre kind fixture			22
does fre word			-17
does get area		-15
does get defect		50	36
does get far		-31
does get far+phrase		-25
does get finish		-22	18
does get fixture		24	-52
does get here		-13
does get kind area		-30
does get kind defect		30
does get kind surface		-14
does get kind word		-54
does get material			-19
does get pair		-14
does get part			28
does get phrase		-22
does get surface		24	32
does get told		12
does get tool			-24
does get verbish		-34	-30
does get word		-54	-17
does give far		-18	-26
does give far+here			-80
does give far+phrase			40
does give here			24
does give kind material			-15
does glue defect			14
does glue far			40
does glue far+here			17
does glue kind area			-14
does glue kind defect		-18
does glue kind fixture			39
does glue kind material		27	20
does glue kind part			17
does glue kind verbish		-13	69
does glue kind word		-25	-28
does glue material		-33	21
does glue pair			16
does glue phrase		-14
does glue word			-69
does go 		-17
does go defect		31
does go far		-26
does go far+here		-24	-12
does go fixture		21
does go here		-24	-33
does go kind area		-25	-21
does go kind fixture		-28
does go kind material		-20
does go kind part		24	-19
does go kind size		43
does go kind surface		-37
does go kind tool		-17
does go kind verbish		-35	-36
does go kind word		-13	-19
does go material			15
does go pair		-30	-36
does go part		33
does go told		-13
does go tool		31
does go verbish		-18
does go word		-15
does grout 		54
does grout far		-34
does grout far+here			16
does grout here			17
does grout told		47
does hang 		41
does hang area			25
does hang defect		-28
does hang far		-17
does hang far+here		-21	-16
does hang far+phrase		24	56
does hang fixture			14
does hang here		32	50
does hang kind area			40
does hang kind defect		-36
does hang kind fixture		81	74
does hang kind material		-49	22
does hang kind part		35
does hang kind surface		26
does hang kind word		-21	-23
does hang material		17	24
does hang part		32
does hang phrase		17
does hang told			-22
does hang word		14	-45
does have area		-40	-19
does have fixture		-20
does have material		24	22
does have part		69
does have surface		-31	34
does have verbish		15
does have word			15
does hold 			14
does hold far			-26
does hold far+here			-25
does hold far+phrase			-37
does hold kind material			-24
does hold kind part			-28
does hold kind word			-26
does hold phrase			-14
does hold told			27
does hold word			-23
does hook 		33
does install 			-17
does install far		-24
does install far+here		12	-16
does install here		21	31
does install kind finish			-19
does install kind fixture		-24	40
does install kind part		32	44
does install kind size		-37
does install kind surface		28	-22
does install kind tool		-23
does install kind verbish		22	-16
does install kind word		24
does install pair		54	36
does install told			-17
does keep 		36
does keep far		-20
does keep far+here		-31
does keep here		12
does keep kind material		-48
does keep phrase		29
does keep told		17
does land far		-29
does land here		21
does lay 		-27	-22
does lay far		18	42
does lay here			32
does lay kind material			52
does lay kind word		30
does lay phrase			-12
does leave defect		23
does leave far		-41	-30
does leave far+here		-37	-30
does leave far+phrase		-13
does leave here		-16
does leave kind area		-15
does leave kind material		-31
does leave kind part		-41
does leave kind surface		-21
does leave kind tool		-19
does leave kind verbish		14
does leave kind word		-25
does leave material		48
does leave pair		61
does leave surface		-52
does leave told		-16
does leave verbish		44
does leave word		-42
does let material		21
does let surface		-72
does let word		-14
does level 			15
does level far			-16
does level far+here			36
does level here			-33
does level kind area			20
does level kind material			-76
does level kind part			-15
does level pair			-84
does like word		19
does look defect		-34
does look far		40
does look far+here		31
does look far+phrase		13
does look here		16
does look kind area		33
does look kind defect		-48
does look kind material		77
does look kind part		45
does look kind surface		-13
does look kind word		17
does look material		-17
does look pair		22
does look part		58
does look word		-33
does make 			-13
does make far		-47	-37
does make far+here		23	37
does make here		-38
does make kind area		-35
does make kind defect		-20
does make kind fixture		76
does make kind material			-36
does make kind word			48
does make material		42	-29
does make pair		37	-20
does make word		15	77
does measure 		-14	-21
does measure far		18	-13
does measure here			-29
does measure phrase			-15
does miss 		-13
does miss far+here		30
does miss far+phrase		-19
does miss here		-21
does miss kind defect		-35
does miss kind material		36
does miss kind surface		-13
does miss pair		-46
does mount here			42
does mount kind part			15
does move 		-18	-13
does move area		35
does move defect		-14
does move far+here		-24
does move far+phrase		-43	25
does move here		48
does move kind defect		-13
does move kind fixture		-28	-39
does move kind material		-20
does move kind part		25	44
does move kind surface			39
does move kind word		47
does move material		-24
does move pair		52	31
does move part		24
does move surface		-33
does move told		-17	-13
does move word		16
does nail far+here			-14
does nail here			12
does nail kind material			-28
does nail kind surface			-31
does need area		-52
does need defect		27
does need fixture		49
does need material		58
does need size		-21
does need surface		-19
does need verbish		-58
does need word		-45
does oil far			-23
does open 		-23	-15
does open far		14	55
does open far+phrase		-47	-27
does open here			-18
does open kind area			60
does open kind fixture		44
does open kind material			-51
does open kind part			31
does open kind surface		43
does open kind verbish		-31
does open kind word		-32	-59
does open material			-55
does open pair		-13
does open phrase		-16	-24
does open surface		31
does open word			-60
does order 		-25
does order far		-21
does order far+phrase		17
does order here		20
does order kind fixture		15
does order kind material		23
does order kind surface		-18
does order kind verbish		41
does order pair		36
does order part		30
does order told		-21
does order word		-21
does owe far		-14
does owe far+phrase		17
does owe here		15
does owe kind material		15
does owe surface		16
does pack far			-36
does pack far+here			20
does pack here			53
does pack kind material			23
does pack kind word			33
does pack material			26
does paint 		34
does paint far			-39
does paint here		14	39
does paint kind material		-37
does paint kind surface		110
does paint kind verbish		-31	20
does paint kind word		-22	23
does paint material		-50
does paint pair			34
does paint told		31
does paint word		-19
does pass far			-17
does pass far+here			47
does pass kind material			-13
does pass kind word			42
does patch 		-38
does patch far		60
does patch here			15
does patch kind defect		-13
does patch kind material		47	16
does patch kind part		-110
does patch kind surface			21
does patch kind verbish		-42
does patch kind word		28
does patch phrase		-16
does patch told		-23
does pick 		19
does pick kind fixture		13
does pick kind part		32
does pick kind surface		-14
does pick kind word		17
does pick pair		40
does pick phrase		28
does pick word		-50
does plane 		-13
does plane far		17
does plane far+here		24
does plane here		-21
does plane kind fixture		82
does plane kind material		63
does plane kind surface		-26
does plane kind word		-56
does plug far			43
does plug kind word			-25
does pour 			-26
does pour far		29
does pour here			22
does pour kind material		121
does pour kind word			31
does prime 		35	-23
does prime far			-26
does prime far+here			-35
does prime here			61
does prime kind word			26
does pull defect			-20
does pull far		-46	-35
does pull far+here		-25
does pull far+phrase		31
does pull here		28	74
does pull kind defect		-16
does pull kind fixture		16
does pull kind material		-17
does pull kind verbish			14
does pull material		39	14
does pull pair		76
does pull phrase		31
does pull surface			14
does pull told		-24	-31
does pull word			-15
does put 		20
does put area		-66
does put defect			-14
does put far			-22
does put far+here			24
does put far+phrase		-43	30
does put fixture		22
does put here			-35
does put kind defect		-54	-12
does put kind finish		-18
does put kind fixture		66
does put kind material		-37	31
does put kind part		-24	15
does put kind surface		35	-44
does put kind tells		-24	31
does put kind word		24
does put material		-38
does put pair			33
does put phrase		-15	-17
does put surface		45	-18
does put tells			-18
does put told		36	12
does put verbish		-26	-27
does put word		-30	31
does redo 		-14
does redo far		25
does redo far+here		30
does redo here		18
does redo kind material		46
does redo kind part		88
does redo kind surface		-68
does redo told		-12
does replace 			34
does replace far		15	-16
does replace far+here		-13	70
does replace here			-12
does replace kind area		-12
does replace kind finish		-13	23
does replace kind fixture		-27	-23
does replace kind part		41
does replace kind surface		-12	43
does replace kind tells			-21
does replace kind verbish			21
does replace kind word			38
does replace kind work		-19
does replace pair			13
does replace told			38
does reset 			-29
does reset far			25
does reset far+here			46
does reset here			15
does reset kind material			53
does reset kind part			76
does reset told			-20
does return 		32
does return far+here		-24
does return kind word		48
does return phrase		22
does return told		13
does rip far		21
does rip far+here		-26
does rip here		19	17
does rip kind material		-35
does rip material		-43
does rip phrase		36
does rip told		-20
does roll 			-23
does roll far		-21	-12
does roll far+here		-15	-17
does roll here		30	36
does roll kind material			54
does roll kind word			14
does run 			26
does run area			-30
does run defect			-43
does run far		-46
does run far+here		-15	-16
does run far+phrase		84	-41
does run fixture			48
does run kind area		-20	-28
does run kind defect		18	-28
does run kind fixture		54	32
does run kind part		-12
does run kind size			-13
does run kind surface		36
does run kind tool			38
does run kind verbish		-30	-46
does run kind word		-21	-30
does run phrase			-22
does run told		-17	65
does run verbish			-49
does run word			-21
does sand 		-26
does sand area		-15
does sand defect		19
does sand far		78	25
does sand far+here		27
does sand fixture		56
does sand here			17
does sand kind area			42
does sand kind defect		19
does sand kind fixture		63
does sand kind part		70
does sand kind surface			21
does sand pair			56
does sand phrase		-30
does sand surface		-24
does say defect		-12
does say material		-28
does say part		26
does say surface		-29
does say verbish		-51
does say word		20
does scrape 		42
does scrape far		-33	58
does scrape far+here			-27
does scrape here			64
does scrape kind area			14
does scrape kind material			37
does scrape kind word		-37	25
does scrape material			36
does screw far		13
does screw far+phrase			-28
does screw here			-39
does screw kind area			-15
does screw kind defect			-25
does screw kind fixture			-61
does screw kind part			-57
does screw kind surface			24
does screw pair			-48
does scribe 			-17
does scribe far		-12	15
does scribe far+here		24	-21
does scribe here		39	51
does scribe kind fixture			31
does scribe kind material		26	75
does scribe kind surface		19	-15
does scribe material			74
does scribe surface			-17
does scribe told			-20
does seal far+here			-15
does seal far+phrase			-18
does seal here			54
does seal kind area			16
does seal kind material			-29
does seal kind part			42
does seal kind surface			45
does seal kind word		-62	-25
does seal material			-15
does seal surface			39
does seal told			19
does seal word			-33
does see defect		-48
does see far		-27
does see far+here		34
does see here		-16
does see kind area		-41
does see kind fixture		-28
does see kind material		-19
does see kind surface		13
does see kind verbish		-19
does see kind word		-49
does see material		-44
does see pair		-50
does see part		42
does see phrase		12
does see surface		26
does send far		54
does send far+here		-17
does send far+phrase		80
does send kind defect		14
does send kind fixture		49
does send kind material		13
does send kind part		72
does send kind size		-15
does send kind verbish		-32
does send kind word		48
does send pair		38
does send word		56
does set 		-34
does set far		-33	-30
does set far+phrase		64	39
does set here		13	78
does set kind area			15
does set kind fixture		33
does set kind material		48
does set kind part			42
does set kind word		-23	45
does set material			-35
does set phrase		-24
does set surface		32
does set told		-14	-27
does set word		16	31
does shim defect			-33
does shim far		-20	-20
does shim far+phrase			44
does shim kind defect			-42
does shim kind fixture			29
does shim kind material		25	32
does shim kind part			18
does show far		-17
does show far+here		-23
does show kind verbish		-16
does show kind word		-26
does show pair		-16
does show phrase		22
does shut 			21
does shut far			40
does shut far+phrase			23
does shut kind part			98
does sister 			55
does sister far			57
does sister kind material			16
does sit far		-31
does sit far+here		-33
does sit kind area		-20
does sit kind surface		24
does sit kind word		-19
does sit material		-25
does skim 		17
does skim far		50
does skim kind material		17
does skim kind word		-18
does snug 			-15
does snug far			32
does snug kind material			55
does snug material			50
does spray 			-21
does spray far			22
does spray far+here			49
does spray here			-39
does spray kind area			-27
does start 		-24
does start far		18
does start far+here		-22
does start far+phrase		29
does start here		27
does start kind area		67
does start kind fixture		110
does start kind material		-17
does start kind part		-16
does start kind verbish		-21
does start kind word		-47
does start surface		39
does start told		-16
does start word		-22
does stick 			-21
does stick far		-22
does stick far+here		-48	-45
does stick here			22
does stick kind word		-31	-32
does stop kind verbish		-25
does stop kind word		-16
does strip 			62
does strip far+here			-46
does strip here			-25
does strip kind material		15	23
does strip kind word		-19
does strip phrase			-17
does swap 		-24	17
does swap area		-24	-20
does swap defect			-12
does swap far		19
does swap far+here		66	-34
does swap far+phrase		13	-40
does swap fixture		-18
does swap here		-19	44
does swap kind area		-37
does swap kind fixture		-20	-60
does swap kind material		25	52
does swap kind part		84	19
does swap kind surface		16	-16
does swap material		26	44
does swap pair		46	51
does swap part		79
does swap phrase			-17
does swap surface		-19	-15
does swap told		-23	41
does swap verbish			31
does swap word		-13	-14
does swing far		-14
does take 		-19
does take defect		-63
does take far			-21
does take far+here		35
does take far+phrase		36	14
does take fixture		-20
does take here			-21
does take kind area		16
does take kind defect		-30
does take kind fixture		53	-25
does take kind material		21	-20
does take kind size		-26
does take kind surface			-52
does take kind tells		24
does take kind tool		85
does take kind verbish		-34
does take kind word			-23
does take material		-29
does take pair			-40
does take part			25
does take phrase		-37
does take surface			-14
does take word		107
does tape defect			-23
does tape far		27
does tape far+here			-27
does tape here			18
does tape kind part			-41
does tape kind word			59
does tape part			-42
does tape word			74
does tell area		62
does tell far		-25
does tell far+here		-29
does tell far+phrase		-36
does tell here		33
does tell kind fixture		34
does tell kind material		-29
does tell kind part		-31
does tell kind surface		-25
does tell kind verbish		71
does tell kind word		-52
does tell pair		18
does tell part		-39
does tell phrase		37
does tell surface		-37
does tell told		-36
does tell verbish		50
does test 			42
does test far+here		55
does test far+phrase			-41
does test here			57
does test kind material		57
does test kind part			-27
does test kind word		-31	37
does test pair			17
does test phrase			-15
does test told			61
does tie far			72
does tie kind word			-40
does tighten 			-17
does tighten far			20
does tighten here			18
does tighten kind part			57
does tighten kind word			18
does tighten told			-17
does top 		-16
does top far		13
does top far+here		-14
does top here			-14
does top kind area			20
does top kind material		-16
does top kind surface		55
does top kind verbish		-33
does top pair			-38
does top told		-17
does touch far		-16
does touch far+here		-16
does touch far+phrase		24
does touch here		12
does touch kind fixture		46
does touch kind material		-12
does touch kind part		-16
does touch kind surface		27
does touch kind word		18
does trim here			20
does trim told		-38
does turn 		19	-15
does turn far		-57
does turn kind material			46
does turn kind part			24
does turn told		39	-19
does use 			-29
does use here			-26
does use kind material			-37
does use phrase			-13
does walk 		-30
does walk kind material		-40
does walk kind surface		-25
does walk told		-15
does want area		-32
does want defect		-30
does want finish		-31
does want material		35
does want part		-32
does want verbish		-25
does want word		-16
does work far			-14
does work far+here			-14
does work kind word			-24
does wrap far+here			16
does wrap kind word			29
ends DET		25	-22
ends NEG		-40
ends Nclock		-26
ends Nidiom			84
ends Nlabel		47
ends OPR		53
ends PREP	-26	-18
ends PRON			-23
ends Q0		13	-23
ends Qlength		-36	-39
ends Qother			24
ends Qpack			17
ends Qtime			-48
ends SUB		-18
ends Vmeasurei	-27		-34
ends Vmoveb	18	-13	18
ends Vneedb		-22
ends Vneeds	-17	-15
ends Votherb		-26
ends Votherp	-12
ends Vreturnb		17
ends Vsayb	-69	-24
ends Vseeb		16
ends Vworkb		23
ends Vworkbp	22		-13
ends Vworkbpp	21		61
ends Vworki		25	17
ends Vworks	22	-25
ends plain		15
ends tarea's	28	-36	-19
ends tdefect	-20		-14
ends tdefect's	13	22	22
ends tdefectVotherb	-27	34
ends tdefectVotheri	-14	-25	-12
ends tdefectVotherp		-25	-12
ends tdefectVotherpp	-14	-17
ends tdefectVothers	-16
ends tdefectVworkbpp			42
ends tdefectVworkp		-13	-30
ends tdefectVworkpp		-17	-21
ends tfinish		-16	-14
ends tfinishVworkb	-33	-20
ends tfinishVworkpp		-22	31
ends tfixture	17	16	18
ends tfixture's	65
ends tfixtureVworkb		29	19
ends tfixtureVworks	-12	29	20
ends tmaterial's	59
ends tmaterialVotherb	17	26
ends tmaterialVworki	53	52	18
ends tmaterialVworks			-17
ends tpart	15	22	12
ends tpart's		25
ends tpartVotherb	19	-14	-24
ends tpartVothers		-25	18
ends tpartVworkb		16
ends tpartVworks	56	31
ends trole		31	84
ends tsurface		15
ends tsurface's	52	-13	-29
ends tsurfaceVotherb	-13	-27
ends tsurfaceVothers		-40
ends tsurfaceVworkb	-13
ends tsurfaceVworki	21		18
ends tsurfaceVworks	25		14
ends ttool's	32
ends ttoolVworkb	-23		-33
ends ttoolVworks	-49	-17
ends twork	-17	-21
ends verb	-16
ends wed	-47	-21
ends wing	-21
ends wly		-46
far after 0			18
far after 1	24	22	23
far after 13+	-21	-19
far after 5-7	-21		-13
far after 8-12	-13	-14	-24
far before 0	24	30
far before 1		-26
far before 2	15	30
far before 3-4		14	14
figure-between	28
flawed			22
frame copula +1	-17
frame copula -1		29	-17
frame copula -3		-13	-13
frame copula -4		-25
frame copula area		44
frame copula defect		-40
frame copula finish		-22	-26
frame copula fixture			37
frame copula here-before	29		16
frame copula material		30
frame copula part		14
frame copula surface			-13
frame copula tells		-19
frame copula tool		-25
frame copula verbish		-18
frame copula word		-20
frame copula work		14	-14
frame imperative +1	19		-27
frame imperative -1	17	25	32
frame imperative -2			-34
frame imperative -3	-20
frame imperative -4	-15		20
frame imperative area		-21	26
frame imperative defect			-20
frame imperative fixture		13
frame imperative here-after	51
frame imperative here-before		-59
frame imperative material			15
frame imperative part		31	21
frame imperative size		38
frame imperative surface			-23
frame imperative tells		-44
frame imperative tool		-38
frame imperative verbish			50
frame imperative word		-19	-39
frame modal +1	15	-14
frame modal -2			-23
frame modal -3	58	-16
frame modal -4	-19
frame modal defect		-21
frame modal finish		-31
frame modal here-after	-34	20	35
frame modal here-before	-13	60
frame modal part		55
frame modal size		-49
frame modal surface		22
frame modal tells		19
frame modal tool		18
frame modal verbish		-15
frame modal word		-17	13
frame modal work		-48
frame none +1	-34		-19
frame none -1	28	41
frame none -4		-28	-15
frame none area			13
frame none defect			-22
frame none finish			22
frame none fixture		28	-19
frame none here-after		16	13
frame none here-before	15		-38
frame none material		16	13
frame none part			15
frame none size			-25
frame none surface			-26
frame none tells		23	-20
frame none tool		13	-21
frame none verbish		-14
frame none work		20	29
frame owed +1	61	-36
frame owed -1	-24
frame owed -2	-34	31
frame owed -3	-51	35
frame owed -4	-24	-18
frame owed area		30
frame owed defect		-19
frame owed here-after	46	41
frame owed here-before		15
frame owed material		17
frame owed size		-16
frame owed surface		36
frame owed tool		-13
frame owed work		-26
frame past +1			-17
frame past -1		19	29
frame past -2		-35
frame past -3		59
frame past -4	-15	24	-28
frame past area		-28
frame past defect		-16	-13
frame past finish		-40
frame past fixture		50
frame past here-after	23
frame past here-before			35
frame past part		17	21
frame past size			18
frame past surface		49
frame past tells		-49
frame past tool		-23
frame past verbish		-28	-13
frame past word		35
frame present +1	-30	-23	-19
frame present -1	19
frame present -2	12	24	-15
frame present -4	26	-17	45
frame present area		-27	32
frame present defect		23
frame present finish		-22	-16
frame present fixture		31
frame present here-after	-44		13
frame present here-before	25	37	-17
frame present material			17
frame present part		15
frame present size		32	24
frame present tells		-14	40
frame present tool		-16
frame present verbish		17	-26
frame present word		-17	-35
head 2 x	-21		-36
head adhesive			13
head air	-34		-31
head altogether	-17
head anybody		-17
head anyhow	-29
head anything		-31
head arvo		-26
head attic	-14
head b	-34
head back bedroom	43
head back door	-25		-47
head backsplash			13
head bad	-26	-49	26
head bag	-26	-39
head balusters	66	45	26
head bar		-34	22
head base	-17	-17
head baseboard		26
head basement	20		-55
head bath		23	45
head bathroom		33	24
head battery	-31
head bay		-49	-12
head bed	-26
head bedroom			23
head bedroom 2	-40
head bench		20	21
head better		-62
head bifold	21
head big	-54	-18
head bit	-32	-67
head black		25	-13
head blade	34		-17
head bled	-54	-14
head blinds	106		60
head blue tape	-23
head board	41	69
head boards	90		61
head bolts			22
head bonding primer		-40
head bottom	-21	12	-13
head bowl	41
head box		-21
head boxes	25	-14
head boy		-14
head br	-37
head bracket		-27	61
head brackets	36		39
head breaker	-24	48	27
head broke	38
head broken	-15		-37
head bucket	-50	-55
head bulb	-18
head c		-16	-34
head cabinet	44		23
head cabinets		102	-14
head cable	36	-57	48
head camera	-23
head cap	-36
head carpet	-45	-18
head carpet's			-22
head case	15		-14
head casing		54
head caulk	-21		21
head ceiling	63	29
head center	-21		-14
head chain	17		-40
head chase		37
head chimney	-28
head chip	-13
head chunk	-12
head circuit			76
head clamps	-49
head clear	-33	-20
head cleats		-29
head clips		12	-16
head closer			42
head closet	47	16	23
head closet rod	17
head coat	-13	49	-14
head code	-25
head cold	-37	20
head color	-21	94
head concrete	40	19
head cord	-41		30
head corner	-85	-54	-42
head corners		57
head corridor	-33	-30
head counter		23
head cover		65	-55
head crack	-32	102
head cracked	-13	-13	-45
head crooked		13
head crown	17	26
head crown's		44	-22
head curb		37
head cut	44	14	59
head cut out	-52	-27
head damper	-54
head dave		-46
head dead		-14
head deck	-36	-45	15
head den		26
head desk	-26
head dimmer	23	33
head ding		-18
head dining room	-25		-17
head dishwasher	27	-58	-13
head disp	19
head disposal			15
head door		-14
head door's		-58
head doors	67	79
head downspout	20	-27
head draft	-64
head drain	97	38	47
head drawer	-25	-83
head drawer front	112	44
head drawing	19	-39
head drip	-41	14
head drip edge	40
head drips	-16
head drop		74
head drops	31		-34
head dry		-34	-58
head dryer	-24	-40
head dryer vent	38
head drywall	108	49	-31
head duct	-23		57
head dumpster		-13
head earliest		39
head edge	-59	18	31
head eggshell		-22
head elbow	-16	36
head elbows		-16
head electrical		21
head else		-33
head end		-38
head end panel	-14	-37
head ends		-14
head entry		51
head epoxy		30
head everywhere		-47
head except	-16	-65
head extension		-17
head extra			-27
head face	-12	-14
head factory		-18
head fall	-19	-25
head falls	76
head fan	33		34
head faucet	-77	-14	13
head fault	-23
head fell	30
head fella		17
head filler		-15	61
head filter	-13
head filters	-18		31
head finish		-41
head fireplace	59	-38
head first			56
head first coat	-31	41	24
head flange	37	56
head flashing	-75	26
head flat	-31	16	-24
head flex	-40	-32	106
head float	78
head floor	35	-21
head floor's	113	30
head foam	-44	-55	-13
head fourth	-27
head frame	-40
head framing	-32
head free	-23		23
head fridge	-43		-21
head front	-30	36	69
head front door	27		-23
head full		24
head furnace	-22		-33
head furniture		58
head gap	-13	-27
head gaps		-41
head garage	-48		-18
head gary	-52	-21	-19
head gas	-39	62	-25
head gasket	-18		-53
head gate	78	102
head glass	40	38	-47
head glue	-24	25	-30
head go	-24
head god	-48
head goes	-12	40
head gone	-12		15
head gray		-29
head grease	-36
head grout	37		-65
head guest room	62
head hair	-20	-20	-14
head hairline	-28
head hall			-32
head hall bath			31
head hallway	57	148
head hand	-18	-54
head handle	-52	-27
head handrail	-47	88	-18
head hanging	29	32
head hard	17	13
head hatch	67	-12	-19
head head	70	-15	16
head header		37
head hearth	31
head heat		-55
head heater	85	15
head height			29
head hinge	-77	-21	32
head hinges		72	-14
head holding	-23
head hole	-33	29	36
head holes	-58	-26	89
head hollow		-18
head home		-47
head hood	-37	24
head hose	71	-17	48
head hose bib	-39	-60
head hot	53	46	15
head hot side	-44
head house		-26	-18
head humidity		-23
head hung	-15	17	-41
head inside	-26	-18
head inspection		-37
head instead	48
head insulation	-20		33
head island	50	49
head itself		48
head jack		29
head jamb	-17		-16
head job	-30	-27
head joint	-23	22
head joints		-42
head joist	-14	43
head joists	62	-50
head key		-14
head keys		19
head kit	60	61
head kitchen	34	13	-16
head kitchen faucet	-44		-36
head knobs	53
head ladder	32	-19
head lags	56		-17
head landing	77	65	32
head latch	23
head laundry	76	73	53
head lav	23
head layers	25
head lead			61
head leak	-36
head leaking		-12	-20
head ledger			15
head leg	-53	-70	-35
head legs			-37
head length	-20
head let go			-24
head level		-29	-17
head lid	28	17	-22
head light	-54	-31	-43
head light's	37	41
head lights		99
head line	34		58
head linen closet			24
head lint	-45
head list			34
head living room	14	-14	-25
head load	-18
head lock	13	-31	-18
head longer		18
head look		-13
head loop	24
head loose		28	-25
head machine		-21
head main	97
head make		31
head marble		17
head marco		-33
head mastic		-13
head me		-19
head mesh	-40		-54
head meter	-43	18
head middle	-42	-30	-56
head mind		-36
head mirror	22	-12
head missing	-15	-31
head miter	42	51
head mortar	-15	-48	-49
head mud	-47	-54	26
head nail	65	-33	36
head nail plates		-16
head nails	-20
head needs	-21
head neutral	44
head newel	52
head nice			-78
head niche	33
head noon		33
head nos			-23
head nosing		14
head number	-46	-16	-37
head nursery			35
head nut	50		35
head o	-17		-18
head oak		22	71
head office	30		-27
head open	62	66
head opened up	-14
head opening	-45	-36	-20
head ours		-32
head out of line	18
head out of plumb		12
head outlet	44	22	50
head outlets	-18	35	-17
head outside	-32	23
head oven	35
head overhang		41
head pad		-50	-13
head paint	-40	42	-18
head pair	23
head pan	38	-26	-14
head panel		60
head panels	18	49	52
head pantry		22	-15
head paper	-26
head patch	49	68
head peel		-34
head people		-40
head piece		17
head pipe	88	-15	-31
head pipes	17
head place			-47
head plank		22
head plaster	-32	81
head plastic	-28		-17
head plate	30	-14	-23
head plates	46	47	25
head plinth		-42
head plug	-18	55	49
head plugs		-35
head ply	-14	-17
head plywood		95
head poly		-91
head porch			-26
head post	-63	17
head posts	-17	41
head pressure		-17	29
head primed		-20	33
head primer	37	-86	-25
head proud		-21
head pull	-26	-43
head pulls		24	15
head pump	65	16	-22
head punch	-24
head punky		-36
head putty		-14
head quiet			-17
head rack	-70	-52
head radiator	-21	21
head rail	33		33
head rain		-32
head rains		-19
head range		-27	-36
head real		21
head rear	51
head red		-18
head reducer	-16	43
head register		-57
head relief valve	-50
head reveal	-15		-25
head rigid		26
head ring	-63		41
head rise	16		-13
head riser		15
head rm	53		-15
head rock		-37	15
head rocks		-32
head rod	-34		-14
head rollers	-36
head roof		70
head room	-36	-14
head round	-23	-23	-39
head row		48
head run	22		-12
head runs			14
head rust	-38
head rusted through	-21
head s	-29
head sagging	-13
head salon	-85
head same		-81
head sample		47
head sand	-13	41	-29
head sash	-22
head saw	-19
head sconces		-17
head screen	21	52	26
head screw	-33	-18
head screwdriver	-14	-19
head screws	-46	-20	-68
head scuff	-12
head sealant		12
head sealer		-57
head seam	43	75	38
head second coat	-14	-37
head sheathing	105		-19
head sheet		-26	-33
head shelf	14	43	21
head shelves			13
head shims	-21	26
head shoe		-18
head shop	-28	-67	-36
head shot	-16	13	-31
head shower		53	80
head side	-80	-57	-25
head sides	25	-39
head siding	14
head silicone			-25
head sill	-33	-24
head sink	-47	-25	-20
head size	-39	-15
head skirting	86
head slab	20		-19
head sleeve		18
head slider	-39	-20
head slides	-23
head slip	-43
head slope	45		17
head slow	78		-44
head smoke	-30
head socket	-44
head soffit	-68	40	-15
head soft		82
head sorry		-28
head spins	30
head splash	-13	29
head splice	36
head split			42
head spot	-53		-41
head spring	-19	28
head stack		-25
head stain	-84		35
head stairs	90
head stairwell	18
head stat	-25
head static	33
head step	13	47
head steps	67	-14
head stile		-43
head stone	-21
head stop	-15
head store	-27	15
head story		21
head stove		-15	19
head straight			-34
head street	46
head strike		20	35
head strip	24
head stripped	-21		-29
head stud	37	28	-40
head studs	-31	28	-13
head subfloor	65
head supposed		-28
head sweep	13		17
head switch	31	62
head tacky		-27
head tag		14
head tank	-13
head tap	-36	-20
head tape		14	23
head temp			-25
head template		14
head the wrong		-17
head thermostat	-82	-36
head thinset		-41
head threshold	82	18
head tile	35
head tiles	95		22
head toe kick		73
head toilet	103	39	59
head toilet seat			22
head too high	-16
head too long	-18	-38
head too short		-25	-51
head top	-25	14
head torn		-14	-30
head track	-12	-36	-14
head transition		-14
head trap	-32		38
head tray		19
head tread		22
head treads	43		27
head trim	-26	53	-13
head truck	-27	-33
head tub	-31	-52	28
head twice	45		-55
head type		13
head union		-55
head unit	-23	-13
head uppers	-55	-39	24
head upstairs	32
head us		-19
head valve	20	-52	42
head van	-16	19
head vanity	-21	15	-35
head vanity top		-27
head vent		41	-38
head vinyl		-13
head wall		-15	-28
head wall bend	-19		-26
head wall's	-28	-36
head walls		-34	-36
head want		-30
head washer	-16	99
head washers		-31
head water	-63	-87	-37
head water's	-100
head wax ring	-24	-36	-80
head weatherstrip	61		37
head weeping			-15
head weight	-15		22
head went	14
head wet	-16	20
head white	-20	-62	-23
head whoever	-34		-13
head width	-16
head window	62	22
head windows		13
head wire		71
head won't close	-14
head wood	-59	-34
head wrong	-22	-42
head you'd	-19
heading	17
heading +1		22	-22
heading -1	-21	-40
heading -2	24
heading -3	64
heading -4	32		-30
heading here-after	-38
heading here-before	13
join +1	-19	-14	-18
join +1 area	-35	16
join +1 defect	-23	-17	-19
join +1 finish	-12
join +1 fixture		-18
join +1 material	-16	-18	-24
join +1 part		-24	-21
join +1 size		-16	-21
join +1 surface	-23		-17
join +1 tells	-26		-16
join +1 tool	-18	-32
join +1 verbish	-15	-38	-16
join -1		19
join -1 area	18
join -1 defect		22
join -1 finish	-24	19
join -1 fixture	25	63	14
join -1 material			-18
join -1 part		54	43
join -1 size		-19	64
join -1 surface			41
join -1 tells	45	45	-21
join -1 tool	20	-24	-25
join -1 verbish		13	-26
join -1 word	-13
join -2 area	17	28	-33
join -2 defect		-31
join -2 finish		-32	19
join -2 fixture	22	45	12
join -2 material	-17	24	43
join -2 size	25	-26	28
join -2 surface		-23
join -2 tells	-17	17	35
join -2 tool		-25	-13
join -2 verbish		-15
join -2 word	-12
join -3 defect		-15
join -3 finish	-14	18
join -3 fixture			12
join -3 material			-22
join -3 part			31
join -3 size	-26		-34
join -3 surface		33
join -3 tells		-39
join -3 tool	-16		-13
join -3 word			-14
join -3 work	-13	-57	-24
join area	34
join area+area	21	83	-23
join area+defect		-20
join area+finish		-20	28
join area+fixture		20
join area+material	22	24	29
join area+part	65
join area+size		-27
join area+surface	33	-24
join area+tells	-47	85
join area+tool	-37	16
join area+verbish		24	21
join area+word		-33
join area+work	19
join defect+finish		-15
join defect+fixture		17
join defect+material			-19
join defect+part		23	24
join defect+size		-18	-39
join defect+surface		19	17
join defect+tells		-36
join defect+word			27
join finish		31	-23
join finish+area			34
join finish+finish	-23
join finish+fixture		23	-37
join finish+material			-47
join finish+part		-46	-30
join finish+surface	-17	81
join finish+verbish		-19
join finish+word	13		25
join fixture	-14		-22
join fixture+area		-58	-26
join fixture+defect	-14	-29	-37
join fixture+finish		32
join fixture+fixture	15
join fixture+material			-20
join fixture+part		15
join fixture+size		-12
join fixture+surface		-13
join fixture+tells	54	-15
join fixture+tool	-19
join fixture+verbish			-20
join fixture+word	-12
join leads along	-15
join leads around	49
join leads at	33	33
join leads at term verb	-24
join leads behind	19	19	18
join leads by	55	23	22
join leads by term	-29
join leads down	27
join leads for	51	-20	25
join leads from	14		-19
join leads in	26	-13	20
join leads in term term	66
join leads in term word		51
join leads in word	-25
join leads in word term	-16
join leads in word word	-37
join leads mark		26	52
join leads mark quantity		-13
join leads near	68
join leads number	-14
join leads of	18	35
join leads of term word		60
join leads off	74	34
join leads on	19		27
join leads on quantity	58
join leads on term verb	33
join leads on term word	21
join leads over	48	46	-22
join leads quantity	14
join leads quantity at	-41
join leads quantity of	-20
join leads quantity on	-51
join leads quantity word	57
join leads term		36	33
join leads term by	-29
join leads term word	-22
join leads through	24
join leads time	69
join leads to			27
join leads to term word	-13
join leads to verb	-13	-17
join leads under	59	-27	93
join leads up	13
join leads up in	46
join leads verb		34
join leads verb at	16	29	40
join leads verb at quantity	-20
join leads verb by	19
join leads verb from	-17
join leads verb in		35	-38
join leads verb mark	33
join leads verb of	35
join leads verb on	18	57	63
join leads verb on word	34
join leads verb quantity of	-59
join leads verb quantity on	40
join leads verb quantity verb	-16
join leads verb term verb	38
join leads verb term word	-28
join leads verb to	-34
join leads verb verb		-22
join leads verb verb in	32
join leads verb verb quantity	-15
join leads verb verb term	-29
join leads verb verb word	-24
join leads verb with	17		18
join leads verb word	-18	31
join leads verb word on	63
join leads verb word quantity	86
join leads verb word verb	-31
join leads verb word word	30
join leads with quantity	-21
join leads word	-12	-19	20
join leads word in		15
join leads word on			13
join leads word quantity	13	-14
join leads word quantity of	-16	-38
join leads word quantity on	-37
join leads word quantity word	-19
join leads word term	-16	-14
join leads word term verb	16
join leads word term word	-14
join leads word to		-53
join leads word verb		45	31
join leads word verb at	-19
join leads word verb in	-39	-14	13
join leads word verb on	42	80	19
join leads word verb quantity	-28	-70
join leads word verb term	-18
join leads word verb verb	-29
join leads word verb word	-12	-13	38
join leads word word	-16	-41
join leads word word quantity	-14
join leads word word to	-14
join leads word word verb	-59	-15
join leads word word word	84
join material	-16	17	14
join material+area	12	23
join material+defect	-20	17
join material+finish			49
join material+material		16	22
join material+part	-14	-22	48
join material+size	-43	-26
join material+surface		28
join material+tells	-26	-38	28
join material+tool	14		-20
join material+verbish		-30	17
join material+word			-28
join part	-25	-30	-34
join part+area	-36		-20
join part+defect		-29	-22
join part+finish		-21
join part+material	-15	23
join part+size	26
join part+surface		-21	-32
join part+tells	-23	-18
join part+tool	-18	-31	-36
join part+verbish	-27		-23
join part+word	-13	-28	-13
join same-before	16		14
join same-before area			19
join same-before defect			-21
join same-before finish		-25	-48
join same-before fixture		-19	15
join same-before material	19	12	35
join same-before size		50
join same-before tells	-35	32	20
join same-before tool		46	27
join same-before verbish		-26
join same-before work		44	26
join size		-19
join size 3	32	19
join size+area	14		-25
join size+defect			-13
join size+finish	-19
join size+fixture	20		52
join size+material	13	-33	15
join size+part		-18
join size+size			73
join size+surface	-17		-55
join size+tells	54
join size+verbish	18		-14
join size+word	-17	17	-22
join sizes 1+2		14
join sizes 2+3	19	23	42
join sizes 3+1	23	30
join sizes 3+2	32		18
join sizes 3+3	-32	-30	-38
join surface	23
join surface+area	62		24
join surface+finish		-28	-52
join surface+fixture	13	40
join surface+material		15
join surface+part			-33
join surface+size	-18
join surface+surface	24	13	17
join surface+tells		26	-14
join surface+tool	-25	-24
join surface+verbish		24	-28
join surface+word		-15
join surface+work			-13
join tells	17	50	20
join tells+area	19		-16
join tells+defect			40
join tells+fixture	25	-15	-23
join tells+material	33		-30
join tells+part	-27	49	29
join tells+surface		19
join tells+word		45
join tool	-19	13	28
join tool+area		-15
join tool+defect			-31
join tool+fixture	-25	-40
join tool+material	-19		52
join tool+part		30	27
join tool+surface		50	-16
join tool+verbish		33
join verbish		-13
join verbish+area	28	-31	-21
join verbish+finish		-16
join verbish+fixture			-17
join verbish+material	-15		19
join verbish+part	23	21
join verbish+size	-17
join verbish+surface	-25	22
join verbish+tells			-16
join verbish+tool		-18	-30
join verbish+verbish	17
join verbish+word	-15	-30
join word			15
join word+area		18	-27
join word+defect		-14	15
join word+finish	-12	21	-40
join word+fixture		13	48
join word+part	14	22	13
join word+size	25
join word+surface		-21	25
join word+tells	-32	41
join word+tool	34	15	31
join word+verbish			-29
join word+work	-29	57
join work	29	-103	43
join work+fixture		-51
join work+material		-24	-19
join work+part		-31
join work+word		-30
kind +1 area	-21
kind +1 finish			-24
kind +1 part		-20	-16
kind +1 size	-17
kind +1 surface	-27
kind +1 tells		-20	20
kind +1 tool			-18
kind +1 verbish		-24	-18
kind +1 word			-18
kind +1 work		-32
kind -1 area		-12
kind -1 defect	-21	-17
kind -1 finish		-42	-36
kind -1 fixture		17	18
kind -1 material	38	27
kind -1 part		79	57
kind -1 size			31
kind -1 surface	16	27
kind -1 tells	-27	-17	50
kind -1 tool		-27	-51
kind -2 area	-17	14	15
kind -2 defect		-29	-24
kind -2 finish	-35	-24	28
kind -2 fixture	57	32	16
kind -2 material	17	30	23
kind -2 part	25	16
kind -2 size	25	22
kind -2 surface		-22
kind -2 tells	-17	-22	-24
kind -2 tool	-16	-16	14
kind -2 verbish	-24	23
kind -3 area		-39	-30
kind -3 finish	-14	-28
kind -3 fixture		19	20
kind -3 material		-19
kind -3 part		18	-15
kind -3 size	-28		-26
kind -3 surface	28	17	-26
kind -3 tells		-27
kind -3 tool	-18	-17	15
kind -4 area		23
kind -4 fixture	19
kind -4 material		-13
kind -4 size	-25	-30
kind -4 surface			-17
kind -4 tells	-14	-15
kind -4 tool	53	-17	-24
kind -4 verbish		-22
kind -4 word	-12	-13	-12
kind -4 work	-13
kind defect	-22		-13
kind finish	-16	-13	-12
kind fixture	21	14	13
kind here-after area	48	31
kind here-after defect	-23	-31
kind here-after finish			41
kind here-after fixture		64	13
kind here-after material	14	28	-16
kind here-after part	45	39	23
kind here-after size	28	52	15
kind here-after surface		37	24
kind here-after tells		55	-30
kind here-after tool	-63	-26	25
kind here-after verbish	16	-45
kind here-after word	-13	-15
kind here-after work			20
kind here-before area	13	-103
kind here-before defect	-13		-72
kind here-before finish	-43
kind here-before fixture	24	29	29
kind here-before material	18	18	27
kind here-before part	36	15	29
kind here-before size			51
kind here-before surface		28
kind here-before tells	-50
kind here-before tool		25	26
kind here-before verbish	-12	76	-20
kind here-before word			32
kind material	14
kind part	20	21	13
kind tells	-23	-14
kind tool		-14
kind word	-13
kind work	-18	-20
lead a -1	49
lead a -3	-47
lead area -1	-13
lead area -2	24
lead area here-after	-19
lead area here-before	14
lead fixture -1	-14
lead fixture -4	21
lead fixture here-after	-14
lead fixture here-before	26
lead material -1	17
lead material -2	-14
lead material here-after	-23
lead material here-before	18
lead number -1	36
lead number -2	30
lead number -3	30
lead number -4	-32
lead number here-after	-18
lead number here-before	15
lead part -2	-13
lead part -4	-18
lead part here-after	-25
lead part here-before	40
lead quantity -1	52
lead quantity -3	-17
lead quantity here-after	-54
lead quantity here-before	50
lead role here-after	92
lead size -1	-56
lead size -2	-35
lead size here-after	20
lead size here-before	56
lead surface -1	-33
lead surface -2	49
lead surface -3	-16
lead surface here-after	-16
lead surface here-before	23
lead tells here-before	-96
lead that -4	43
lead that here-after	-19
lead the -1	32
lead the -2	-47
lead the -4	-21
lead the here-after	60
lead the here-before	-27
lead tool here-after	32
lead verbish -1	25
lead verbish -2	20
lead verbish -3	28
lead verbish here-after	-29
lead verbish here-before	35
lead with here-before	32
lead word -1	24
lead word -2	15
lead word here-after	-18
lead word here-before	14
led none far	-12	-20	-13
led none here	17
led none none 0 outside 1		-39	-26
led none none 0 outside 2	13
led none none 0 outside 3			-17
led none none 0 outside 4	19
led none none 1 outside 0	25
led none none 1 outside 2		-16	-13
led none none 1 outside 3			-25
led none none 1 outside 4			-13
led none none 2 outside 0	29
led none none 2 outside 1	-16		-13
led none none 2 outside 3		-12	-17
led none none 2 outside 4	-24	15
led none none 3 outside 0	20	-18
led none none 3 outside 1	-16
led none none 3 outside 4	15
led none points 0 outside 1		-18	-20
led none points 0 outside 2		-15	-19
led none points 0 outside 3		-22
led none points 1 outside 0	-23
led none points 1 outside 1	-45	-17	-20
led none points 1 outside 2	81	-13
led none points 1 outside 3			-19
led none points 1 outside 4			-13
led none points 2 outside 0	-29
led none points 2 outside 1	-16		16
led none points 2 outside 2	24		-23
led none points 2 outside 3		-20
led none points 3 outside 0			-27
led none points 3 outside 1	33	-18	-21
led none points 3 outside 2	14	-20	29
led none points 3 outside 4		58
led turn far			-14
led turn here		12	17
led turn none 0 outside 1		35
led turn none 0 outside 3			-31
led turn none 0 outside 4		-44	-27
led turn none 1 outside 0		59	37
led turn none 1 outside 1		-18	-22
led turn none 1 outside 2			-14
led turn none 1 outside 3			-27
led turn none 1 outside 4		-13	-22
led turn none 2 outside 0			16
led turn none 2 outside 1		-29
led turn none 2 outside 2			-24
led turn none 2 outside 3			-19
led turn none 3 outside 0		32
led turn none 3 outside 1		-41
led turn none 3 outside 2		15
led turn none 3 outside 3		-19
led turn pair		13	16
led turn points 0 outside 1			19
led turn points 0 outside 2		17
led turn points 0 outside 3		33
led turn points 0 outside 4		17	-25
led turn points 1 outside 0		14
led turn points 1 outside 2		17	65
led turn points 1 outside 3			-48
led turn points 1 outside 4		-25	-20
led turn points 2 outside 0			38
led turn points 2 outside 1		-33	15
led turn points 2 outside 2			50
led turn points 2 outside 3		-44
led turn points 3 outside 0		12	14
led turn points 3 outside 1		23
led turn points 3 outside 2		-26	-17
led turn points 3 outside 3		13
led verb far+phrase		12
led verb here			13
led verb none 0 outside 1		41	38
led verb none 0 outside 3		17
led verb none 0 outside 4		-37	13
led verb none 1 outside 0		50	38
led verb none 1 outside 3		-24	13
led verb none 1 outside 4		-24	-20
led verb none 2 outside 0		46	24
led verb none 2 outside 1		-17	-16
led verb none 2 outside 2			19
led verb none 2 outside 4		21	28
led verb none 3 outside 1			-30
led verb none 3 outside 2		30	53
led verb none 3 outside 3		-25	14
led verb none 3 outside 4		-25
led verb pair		30	25
led verb points 0 outside 1		18	-29
led verb points 0 outside 2			30
led verb points 0 outside 3		21	42
led verb points 0 outside 4		-21	13
led verb points 1 outside 0			-18
led verb points 1 outside 2		19	16
led verb points 1 outside 3			43
led verb points 2 outside 0			-27
led verb points 2 outside 1		12
led verb points 2 outside 2		25
led verb points 2 outside 3		26
led verb points 2 outside 4		-26
led verb points 3 outside 0		-13
led verb points 3 outside 3		21	41
lemma be object	-30
lemma be subject	35
lemma bend subject	24
lemma crack subject	43
lemma find object	75
lemma get object	-19
lemma get subject	40
lemma go object	-40
lemma go subject	-72
lemma hang object	-54
lemma hang subject	19
lemma hum subject	-30
lemma leave object	17
lemma run object	-19
lemma run subject	24
lemma say object	38
lemma send object	-47
lemma sit object	-41
lemma sit subject	18
lemma stick object	-45
lemma trip subject	-65
number many many		86	75
number many one		-53	-65
number one many		-16	-12
number one one		18
opens CONJ		21
opens COP		-37	25
opens DET		35
opens OPR		22
opens PREP	-23	-37	-17
opens PRON			-14
opens Q0		35	14
opens Qcount			-17
opens Qlength		-60	-25
opens Qtime			-20
opens Ton		14
opens Vmeasurei		-15
opens Vmoveb		-37
opens Vmovep	-36		-59
opens Vmoves	-34	-33
opens Votheri	35
opens Vsayb	-14	-50	-16
opens Vworkb	-26	-20
opens Vworkbp	-38
opens Vworkbpp		18	-28
opens Vworki	-29	-20	24
opens Vworkpp	-17
opens Vworks	27		38
opens tarea	17	24
opens tarea's	18	19	-16
opens tdefect	-22	-13	-15
opens tdefect's		21	22
opens tdefectVotherb	-35	14
opens tdefectVotheri	-17	-25	-17
opens tdefectVotherp	-18	-44	17
opens tdefectVotherpp	-14	-17
opens tdefectVothers	-16
opens tdefectVworkbpp	-16
opens tdefectVworkp		-13	-31
opens tdefectVworkpp		-15	-22
opens tfinish	-24		-16
opens tfinishVworkb	-29
opens tfinishVworkpp	-28	-16
opens tfixture	33	17	25
opens tfixture's	95
opens tfixtureVworkb		42	27
opens tfixtureVworks	-16	-22	27
opens tmaterial		17
opens tmaterial's	61	-15
opens tmaterialVotherb	18	46
opens tmaterialVworkb		17
opens tmaterialVworki	67	62	47
opens tmaterialVworks		-14
opens tpart	30	25	19
opens tpart's	30	28
opens tpartVotherb	30	-38	18
opens tpartVothers			23
opens tpartVworkb		32	20
opens tpartVworki	-18
opens tpartVworks	12	67
opens trole	-40	-17	-22
opens trole's			-28
opens tsurface	14	13
opens tsurface's	12	-35	-37
opens tsurfaceVotherb	-37	-33	-23
opens tsurfaceVothers		-21
opens tsurfaceVworkb		20
opens tsurfaceVworki	-16		18
opens tsurfaceVworks		-38
opens ttool	17	-14
opens ttool's	56	-23
opens ttoolVworkb	-18	-15	-84
opens ttoolVworks	-49
opens twork	-14	14	19
opens w	-26	-20	-13
opens w's	-21	-53
opens wed	-24
opens wing	-21
opens wly		-45
opens-with -4	-20
opens-with here-after	38
order before far+here		19	-13
order before here			39
order before pair			28
order behind far+here			32
order behind far+phrase		12
order behind here			-21
order behind pair		48
outside 0 lacks none 1	25	53	32
outside 0 lacks none 2	29	29	19
outside 0 lacks none 3	20
outside 0 lacks points 1	-23		-22
outside 0 lacks points 2	-29		-15
outside 0 lacks points 3			-20
outside 1 lacks none 1		-17	-24
outside 1 lacks none 2	-16	-28	-24
outside 1 lacks none 3	-16		-26
outside 1 lacks points 0			-44
outside 1 lacks points 1	-45		-16
outside 1 lacks points 2	-16		13
outside 1 lacks points 3	33		-12
outside 2 lacks none 0	13		-14
outside 2 lacks none 1		-20	-18
outside 2 lacks none 3		24	33
outside 2 lacks points 0			14
outside 2 lacks points 1	81		40
outside 2 lacks points 2	24	17
outside 2 lacks points 3	14	-27	24
outside 3 lacks none 0		17	-16
outside 3 lacks none 1		-26	-21
outside 3 lacks none 2			-17
outside 3 lacks none 3		-37	13
outside 3 lacks points 0			35
outside 3 lacks points 1		14	12
outside 3 lacks points 2		-13
outside 3 lacks points 3		16	42
outside 4 lacks none 0	19	-38
outside 4 lacks none 1		-28	-34
outside 4 lacks none 2	-24	30	18
outside 4 lacks none 3	15	-32
outside 4 lacks points 0		-14
outside 4 lacks points 1			-18
outside 4 lacks points 2		-17
outside 4 lacks points 3		50
pair by 1	-19
pair by a		-32	-18
pair by about	-20	-13
pair by above	-38
pair by across	39
pair by after	15
pair by all	24	-23	19
pair by along	-25		65
pair by an	-59	19
pair by and	-24	-35
pair by any	21
pair by are	12		63
pair by around	34		47
pair by as	-15
pair by back	-13	-34	-13
pair by bad	-37
pair by be		53
pair by been	-26
pair by before		-32
pair by behind	29		41
pair by both	56		-52
pair by bottom	27
pair by box	50
pair by by			35
pair by came	-28		34
pair by can	38	-27
pair by clean	-28
pair by come		55
pair by comes	-35
pair by don't	-16
pair by done	-13
pair by down	-20	-48	-34
pair by dumps	-23
pair by each	-30
pair by em	23
pair by every	-20
pair by finally	107
pair by for	46	-13	25
pair by from	-15		52
pair by front	-35
pair by get	-33
pair by go	-31	49
pair by goes	15	80
pair by gone	55
pair by got		51	-35
pair by gotta		70
pair by guy	17
pair by had	-24		20
pair by hanging	-23
pair by hangs	22
pair by has	17	-13	33
pair by have	36	-19
pair by her	75
pair by his	-22
pair by house	40
pair by hung			-20
pair by i		42	55
pair by in	26
pair by into	-31		-56
pair by is		-20
pair by it	-26	-53	-53
pair by it's	26
pair by its	-28	-27	44
pair by just	-33
pair by landed	19
pair by left	34	-20
pair by like	-39	-37
pair by low	-44
pair by mark	-16	-33
pair by me	92
pair by my	37
pair by near	28
pair by need	-17	64
pair by needs	82
pair by new	-13
pair by no	-32	-14
pair by nothing	-37
pair by number	30		81
pair by of		27
pair by off	22	53
pair by old	30
pair by on	35	24	44
pair by once		-16
pair by only	-44	-18
pair by or	20	-38
pair by out	-19	-13
pair by over	14	35	-63
pair by pulled	-34
pair by put	-50
pair by quantity		-52
pair by reads	30
pair by right	-16
pair by round	-26
pair by run	-20
pair by set	-35		37
pair by since	-14
pair by size	-55
pair by so	-32
pair by still	38	18
pair by strip	23
pair by term		-15	-23
pair by than	-52
pair by that	34
pair by the	17	14	27
pair by their	-41
pair by there	-32		32
pair by they	46
pair by thick	-55
pair by this	15
pair by those	29
pair by through	24
pair by to		-18
pair by too	-27
pair by took	24
pair by under	26		68
pair by up	-25	-13
pair by was		-48
pair by way	-17
pair by we	-39
pair by went	-24		58
pair by were	-23
pair by when		-28
pair by where	-48		-20
pair by which	-27
pair by will		-26
pair by with		-42	-12
pair by without	-15
pair false		15	15
pair true		-19
part +1 object	-21		-14
part +1 opens		-16	-12
part +1 subject	-12	-14
part +1 subject-late	-14	-39	-15
part -1 bare			-25
part -1 object		14
part -1 opens		17	16
part -1 subject	23	28	34
part -1 subject-late			-15
part -2 bare	-13
part -2 object			-19
part -2 opens	23	13	14
part -2 subject		25	20
part -2 subject-late	13	14	32
part -3 bare	-20
part -3 object		-18	-20
part -3 opens	12	13
part -3 subject		14
part -3 subject-late		47	31
part -4 object			-15
part -4 opens	16
part -4 subject		-18
part -4 subject-late	-23		-13
part bare	-15		-14
part bare area		35
part bare defect	-22	-23	-26
part bare material			-32
part bare size	-31	31	-22
part bare surface		15	-16
part bare tells	41	21
part bare tool	-19	19	-20
part bare verbish		-19	21
part bare word	-16	-15
part here-after bare	-27		-17
part here-after object	-13
part here-after opens	63	18	33
part here-after subject	54	40	21
part here-after subject-late	12	85	34
part here-before bare		19
part here-before object	-69	24	40
part here-before opens	18		-46
part here-before subject	22		23
part here-before subject-late	25	32
part object	-22		-18
part object defect	-17
part object finish	-16		-22
part object fixture	15
part object material			-15
part object part	24	34	16
part object surface		15
part object tells	-32	-13
part object tool	-24	-15
part object verbish	-13	-17	-19
part object word	-18		-16
part object work		-33
part opens	27		13
part opens area	14	-19	18
part opens defect	-21	-23
part opens finish	-19	-54	14
part opens fixture	30
part opens material	48	14	35
part opens part	19	22	15
part opens surface	35	12	-23
part opens tells	22
part opens tool	24	-24
part opens verbish		34
part opens work			13
part subject	15		16
part subject area	16		-16
part subject defect	-72	-35
part subject finish	-14	-49
part subject fixture	26	34	25
part subject material	17	15	16
part subject size	-17	-21	36
part subject surface	19
part subject tells	-37	-44
part subject tool	42
part subject work	-21
part subject-late area		-28
part subject-late defect	15	34	-25
part subject-late finish	-17
part subject-late fixture			-21
part subject-late material		56	35
part subject-late part	-17
part subject-late surface	21		-25
part subject-late verbish	37
person	-36
phrase behind far		12
phrase nouns 2		35
phrase opens all			-32
phrase opens an		-19
phrase opens anything		-17
phrase opens are			16
phrase opens at		-19	-14
phrase opens both			13
phrase opens for		-19	13
phrase opens from		-70
phrase opens in		-18	-30
phrase opens is		-33	16
phrase opens it		-19	-14
phrase opens me		21
phrase opens new		42
phrase opens nothing		31
phrase opens number		-36
phrase opens of			-15
phrase opens out		-50
phrase opens quantity		17	-23
phrase opens that		18
phrase opens the		33	20
phrase opens to		-16	-35
phrase opens up		-42	23
phrase opens yet		-56
phrase points both 1			12
phrase points it 0		-37	-27
phrase points it 1		50
phrase points it 2		40
phrase points nothing 0		17
phrase points nothing 2		27
phrase points one 0		-34	29
phrase points one 1		50
phrase points that 0		30
phrase size 0		28
phrase size 3		15
phrase size 4		16
phrase size 5		42
phrase size 7		28
phrase subject and behind present		17	18
phrase subject modal		18
phrase subject owed		36
phrase subject present			14
points both -2			27
points both -4			-13
points both here-after			-39
points both here-before			70
points both object			-19
points both subject			48
points both subject-late			-18
points em +1			-18
points em -1		94	44
points em -2		-25	-30
points em -3		68	-17
points em -4		-84	15
points em bare		-54	-41
points em here-before		-35	18
points em opens			-29
points em subject		-28	63
points em subject-late			-33
points it +1		-35	-17
points it -2			37
points it -3		23	15
points it -4			-14
points it bare		-26	-19
points it here-after		-23	-53
points it here-before		20	39
points it object		-25	-28
points it opens			19
points it subject		30	20
points it subject-late			32
points none +1			-18
points none -1		14
points none bare			-13
points none here-after		17	15
points none here-before		16	17
points none object			-15
points none opens		15	12
points one +1		-15
points one -1		87	55
points one -2			42
points one -3		-47	-80
points one -4			-28
points one here-before		30	-30
points one object		18	-46
points one opens		22
points one subject		-17	33
points one subject-late		23
points that +1		-23	-23
points that -1		43	47
points that -2		26	-42
points that -3			-19
points that bare		-18	-15
points that here-after		28	47
points that here-before		-29	16
points that object			-19
points that opens		-26	-29
points that subject		29	54
points that subject-late		17
points them +1		-12
points them -1		81	91
points them -2			-36
points them -3		30
points them -4		-73	-36
points them bare		-13
points them here-after		43
points them here-before			-46
points them object		45	16
points them opens			-14
points them subject		-24
points them subject-late		34
points they -2		60
points they -3		-32
points they -4		-44
points they here-after		-38
points they here-before		92
points they object			60
points they subject		15
points they subject-late		-17
points this -2		100
points this object		31
points those +1		-24
points those -1		-54
points those -3		56
points those -4		17
points those bare		78
points those here-before		46
points those object			-51
points those subject		-53
points those subject-late		36
prep about	-39
prep above	-16	-56	-33
prep across	25		-30
prep after	-25	-69	-12
prep along	12	-44	21
prep around	34
prep at	-21		-19
prep before		-42
prep below	-54
prep between	65	-21
prep by	-29	-29	-39
prep down	30	-19	-25
prep for	14	21	-16
prep from	-29	-38	-17
prep here-after after		-80
prep here-after along	-34
prep here-after at	-21		-26
prep here-after behind	18
prep here-after below	-82
prep here-after by		-25	21
prep here-after for	-61	69	-49
prep here-after from	-49	-21	14
prep here-after in	24		25
prep here-after near	-62
prep here-after of	32	18	26
prep here-after off	38	30	56
prep here-after on	31	-13	25
prep here-after out			27
prep here-after over	75
prep here-after to	-63	28
prep here-after under	-43		22
prep here-after with	-55	-22	-45
prep here-before at	25
prep here-before before		15
prep here-before behind	19
prep here-before by	-94
prep here-before in			33
prep here-before of	33	23	-38
prep here-before on	-34		23
prep here-before over	14
prep here-before to		61
prep in		-15
prep into	-40	21	-62
prep off	46	15
prep other about		-61
prep other above		-58
prep other across			-29
prep other after		-24	-27
prep other along	60	-40	27
prep other around	-18
prep other at	-25	-14	-18
prep other before		-81
prep other below	14
prep other between		-18	-12
prep other by	-20	-27	-44
prep other down	47	-12	-28
prep other for	29
prep other from	-12	-41	-28
prep other in		-15	-20
prep other into	-47	33	-24
prep other of	-12
prep other off	46		-16
prep other on			-23
prep other out	-15	-24	-28
prep other over	-34	-27	-31
prep other past		-31
prep other through	-21		32
prep other to	-31	-27	-18
prep other toward	-65	-12
prep other under		-52	-21
prep other with		-29	-17
prep other without		46
prep out	-30	-15
prep over	12	-19	-39
prep past	-23	-31
prep through	94	-13	50
prep to	-28		-18
prep toward	-71	-53	-20
prep under	-21	-52
prep up	25	12
prep with	-18	-28	-29
prep without	-32	48
rank after 2	-17	-18	-19
rank after 3	-31	12	-62
rank before 0	39
rank before 2	-13
rank before 4		13
rule done/none			50
rule lacks none 0			19
rule lacks none 1			19
rule problem/absent	-29
rule problem/refuses	-19
rule size 4	20		30
rule size 5			27
rule word 		-17
rule word 3			-12
rule word at		-28
rule word back	31
rule word bedroom	14
rule word box	-30
rule word ceiling	37
rule word closet	-21
rule word coat			69
rule word corner	-47
rule word down		-13
rule word eight			-22
rule word faucet	-21
rule word feet			54
rule word finish			38
rule word first			71
rule word front	-22
rule word go		-17
rule word hinge	24
rule word inch			-19
rule word install		31	36
rule word island	-20
rule word kitchen	-27
rule word leave		-14
rule word old			14
rule word on			46
rule word one		-12	78
rule word rail	16
rule word room	23
rule word round		47
rule word shelf	25
rule word sill	15
rule word slab	14
rule word smoke	-17
rule word tiles	15
rule word wall	27
rule word water			-14
rule word window	-13
says its verb		-17	-13
says owed		13
sentences -1	-34	-37	-22
sentences -1 bare	-26	-29	-14
sentences -1 object		-19
sentences -1 opens	-15	-27
sentences -1 subject	-27		-13
sentences -1 subject-late		-18	-34
sentences -2	-22	-32	-39
sentences -2 bare	-15	-21	-18
sentences -2 object		-20	-15
sentences -2 opens		-26	-26
sentences -2 subject	-19	-16	-23
sentences -2 subject-late		58	-17
sentences 1	-22	-25	-17
sentences 1 bare	-19	-18
sentences 1 object	-12	-16
sentences 1 opens	-15	-18	-15
sentences 1 subject	-13	-18
sentences 1 subject-late	-15	-32	-26
size 1	-35	-18	-18
size 1 far+here	14	-16	25
size 1 here	-13
size 1 outside 1	-13	-13	-12
size 1 pair	12	-50
size 2	17
size 2 far		-12
size 2 far+phrase		-22	-13
size 2 here	28		15
size 2 outside 0	14
size 3	13	13
size 3 far+phrase		16
size 3 here	49	32	32
size 3 outside 0	21	16	19
size 3 outside 2			14
size 3 pair	14	37	35
size 3 told			-22
size 4	16	18
size 4 far		-25
size 4 far+here		17
size 4 far+phrase			-13
size 4 here	106	40	38
size 4 outside 0	21	33	13
size 4 outside 1		33
size 4 outside 2		12
size 4 outside 3	14	-16	-12
size 4 pair	15	61	31
size 4 told		20	20
size 5			18
size 5 far			13
size 5 far+here	-13
size 5 far+phrase			32
size 5 here	84		35
size 5 outside 0	35	42
size 5 outside 1		14
size 5 outside 2			19
size 5 outside 3	-25		47
size 5 outside 4		-14
size 5 pair	21	38
size 5 phrase		30
size 5 told		-23	-22
size 6 far	18	-27
size 6 far+here		-35	-26
size 6 far+phrase		49
size 6 outside 0		-17
size 6 outside 1			17
size 6 outside 2		32
size 6 outside 3	33	15
size 6 outside 4	-13	-13	-20
size 6 pair		-15
size 6 told		-23
size 7	-18	-16	-14
size 7 far	-13	-26	-42
size 7 far+here	-28
size 7 far+phrase		-35
size 7 outside 0		20
size 7 outside 3		-19
size 7 outside 4	-27	-26	-17
size 7 pair			-12
size 7 phrase		21
size 7 told		-19
sort CONJ		-15
sort COP		-28	17
sort DET		30
sort NEG			-27
sort OPR		48
sort PREP	-18	20
sort PRON			-19
sort SUB			-16
sort Vbuyb		-21
sort Vhaveb		-51
sort Vmeasureb	-25
sort Vmeasurei	-41		-34
sort Vmeasures		-13
sort Vmoves			-20
sort Vneeds	-18	-18
sort Votherb		14
sort Votheri	29		16
sort Votherp			-16
sort Vsayb	-69	-54	14
sort Vseeb		22
sort Vworkb		29
sort Vworkbp	22		-13
sort Vworkbpp			25
sort Vworki		27	21
sort Vworkpp	-14
sort Vworks	18
sort w	-16		-15
sort w's		-23	-18
sort wed	-31
sort wing	-30
sort wly		-66	-20
stands after		-20	-16
stands after 0 of 0	-31	-28	-28
stands after 1 of 0	-18	-30	-29
stands after 2 of 0		-30	-16
stands after 2 of 1	-20
stands after has 0	-45	-46	-41
stands after has 1		-13	-14
stands after points em		-23
stands after points it		-26	-20
stands after points it's	-29	-22
stands after points nothing		-18	-13
stands after points one			-16
stands after points that		-13	-27
stands after points that's		-21	-24
stands after points them		-17	-18
stands after points they		-45
stands after points those		-22
stands before 0 of 0		13	40
stands before 0 of 1	16
stands before 0 of 2		-18
stands before 1 of 0	-63		19
stands before 1 of 1	16		-13
stands before 2 of 0	53	14	-15
stands before 2 of 1	-18	-14
stands before 2 of 2	-14
stands before 3 of 0	42	15
stands before 3 of 1	-36
stands before 4 of 0		-19	-20
stands before 4 of 1	-19	32
stands before 4 of 2		23	19
stands before 4 of 3			61
stands before has 0	56	32	38
stands before has 1	-16		-18
stands before has 2	-13
stands before has 3			20
stands before points em		22	-17
stands before points it		12	20
stands before points it's	-61	-25	-14
stands before points one		45
stands before points ones			-20
stands before points that		20
stands before points that's		36	34
stands before points them		33	28
stands before points they		-28
stands before points they're		22
stands before points those		61
stands here	14	20	14
stands here 0 of 1	20	28	20
stands here 0 of 2	34		21
stands here 0 of 3	60	30
stands here 1 of 2	-13
stands here 1 of 3			42
stands here 2 of 3	-25	-20	-30
stands here 3 of 3	-42		-73
stands here has 1	20	28	20
stands here has 2	21		12
stands here points both			29
stands here points em			21
stands here points it's	79	38	-65
stands here points nothing	14	26	14
stands here points one		-26
stands here points that			44
stands here points that's		37	-14
stands here points them		20	-33
stands here points they		37
subject none +1	-23
subject none -1	21
subject own +1	-13
subject own here-after	-19
subject own here-before	25
subject person +1	-50
subject person -3	-12
subject person -4	17
subject person here-after	18
subject person here-before	28
subject pointer +1	-29
subject pointer -1	22
subject pointer -2	17
subject pointer here-after	18
subject pointer here-before	-78
subject tells +1	14
subject tells -1	-34
subject tells -2	-57
subject tells -4	-20
subject tells here-after	39
subject tells here-before	-34
told as bought before		21
told as done after		-27
told as done here		-20
told as fixed after		-33	-27
told as fixed before		-27	28
told as fixed here		-51	20
told as have before		40	18
told as have here	-22
told as need after			-12
told as need before		-22	-28
told as need here	86	40
told as open after		-33	-26
told as open before		21	-14
told as open here			12
told as ordered before		53
told as used after	30	16
told as used before		-15	12
told as used here	12	16
told done 0 near		-14
told done 0 touches		23
told done 1 near		-16
told fixed far		-18	-50
told fixed near		23	-29
told fixed over			19
told fixed touches			-18
told open far		-16
told open touches			19
told problem 0 far			-20
told problem 0 over			14
told problem 1 far		-22
told problem 1 near		-18
told problem 1 over			36
told size 1		-12
told size 3			-22
touches-after	-16
touches-before	23
unit none defect	-22
unit none finish	-16
unit none fixture	20
unit none material	13
unit none part	21
unit none tells	-23
unit none word	-12
unit none work	-18
use buy		32	19
use have		-19	23
use measure	-25	-15	-12
use move	-18
use need		21
use return		13
use say	-26
use see		17	-21
use use	15
verb behind #		37	36
verb behind a		15	-43
verb behind already			-17
verb behind anybody		54
verb behind are			52
verb behind be		88
verb behind been			41
verb behind can		-13
verb behind can't		34
verb behind don't		39
verb behind get		107
verb behind gonna		15
verb behind have			34
verb behind he		-62
verb behind he'll		31
verb behind he's		26
verb behind i			22
verb behind i'd		-70
verb behind i'll		33
verb behind i'm		32
verb behind i've			77
verb behind is		-50	39
verb behind it		-31	14
verb behind it's		-27	74
verb behind must		-21
verb behind needs		45
verb behind no			-86
verb behind nobody		43
verb behind not		51
verb behind number			37
verb behind quantity		-57	-17
verb behind she		-69	-72
verb behind should		28
verb behind still		-21
verb behind term		-46
verb behind that's			-30
verb behind the		-31	-16
verb behind they		-35
verb behind they're		-18
verb behind time		28
verb behind to		74	30
verb behind wants		56
verb behind was			-49
verb behind we		29	17
verb behind will		62
verb behind you		16
verb form b main		33	22
verb form b side			-18
verb form bp main		47
verb form bp side			-34
verb form bpp main		35
verb form bpp side		40	50
verb form i main		79
verb form i side		21	-38
verb form p main		-29	29
verb form p side		-67
verb form pp main			30
verb form pp side		-22	34
verb form s main		-15	22
verb form s side		29	-35
verb lemma add imperative		42
verb lemma bolt past			-64
verb lemma bring imperative		34
verb lemma bring modal		19
verb lemma call imperative		47
verb lemma call present		62
verb lemma cap past			29
verb lemma caulk past			42
verb lemma change past			16
verb lemma change present			46
verb lemma check imperative		48
verb lemma check past			15
verb lemma clean past			62
verb lemma close present		-32
verb lemma come copula		-62
verb lemma cut copula			24
verb lemma cut imperative		58
verb lemma cut none		43	60
verb lemma cut owed		41
verb lemma cut past			-48
verb lemma do copula			43
verb lemma do none			-19
verb lemma drill past			-46
verb lemma dry copula		-37	-16
verb lemma dry imperative		-47
verb lemma dry none			-37
verb lemma fill past			44
verb lemma finish past			32
verb lemma finish present			-51
verb lemma fit past			53
verb lemma fix past			59
verb lemma fre past			30
verb lemma get imperative		-40
verb lemma get modal		-16
verb lemma get owed		-78
verb lemma get past		-19
verb lemma glue copula			32
verb lemma glue past			51
verb lemma go copula		-86
verb lemma go imperative		-24
verb lemma go modal		-43
verb lemma go owed		-121
verb lemma go past			-93
verb lemma go present		-28
verb lemma grout past			45
verb lemma hang copula			48
verb lemma hang imperative		40
verb lemma hang past			34
verb lemma hold past			-60
verb lemma leave imperative		-69
verb lemma leave past		-76
verb lemma look imperative		71
verb lemma look modal		35
verb lemma look owed		22
verb lemma make past			-45
verb lemma make present		-39
verb lemma measure past			68
verb lemma miss none		-58
verb lemma move modal		31
verb lemma move owed		24
verb lemma nail past			-20
verb lemma order imperative		25
verb lemma owe present		20
verb lemma pack past			43
verb lemma paint copula			14
verb lemma paint modal		49
verb lemma paint past			17
verb lemma pass past			40
verb lemma patch past			51
verb lemma pin past			-34
verb lemma plug past			-25
verb lemma pull past			26
verb lemma put imperative		-18	35
verb lemma put modal		20
verb lemma put none		-27	-17
verb lemma put past		77
verb lemma replace imperative		46
verb lemma replace past			37
verb lemma roll past			21
verb lemma run copula			-43
verb lemma run imperative		43
verb lemma sand imperative		27
verb lemma sand modal		50
verb lemma sand owed		26
verb lemma screw past			-24
verb lemma seal past			30
verb lemma see imperative		-77
verb lemma send imperative		41
verb lemma set copula			45
verb lemma set none			71
verb lemma set past			33
verb lemma sister past			22
verb lemma snug past			22
verb lemma start imperative		-18
verb lemma start present		57
verb lemma swap imperative		43
verb lemma swap past			28
verb lemma take past			-15
verb lemma take present		36
verb lemma tape past			24
verb lemma tell past		-55
verb lemma test past			22
verb lemma tighten past			46
verb lemma top past			-18
verb lemma use past			-36
verb lemma walk present		15
verb main		29	27
verb main imperative		40	35
verb main modal		35	-18
verb main owed		32	42
verb main past		-31	26
verb main present		18	25
verb no rule		29	30
verb none		-26	-30
verb none of 0			-30
verb none of 1		-33	-28
verb none of 2		-28	-30
verb none of 3		-28	-25
verb none turn		-25	-25
verb nth 0		24	26
verb nth 0 of 1		29	29
verb nth 0 of 2			17
verb nth 0 of 3		37	33
verb nth 0 of 4		37	73
verb nth 1 of 3			-44
verb nth 1 of 4		-18	-31
verb nth 2			-15
verb nth 2 of 3			-12
verb nth 2 of 4		14	-16
verb nth 3		-28	-28
verb nth 3 of 4		-28	-28
verb of rule		16	34
verb of rule come		-52
verb of rule do		13
verb of rule finish			-37
verb of rule install		-34	16
verb of rule send		62
verb other rule		-23	-31
verb same rule		45	33
verb says add		55
verb says ask		16
verb says bolt			12
verb says book		-62
verb says box		21
verb says bring		22
verb says buy		-38
verb says call		38
verb says cap			49
verb says caulk		27	43
verb says change		62	40
verb says check		81	19
verb says clean			51
verb says close		13	28
verb says complete			-33
verb says cut		25	19
verb says cut in			53
verb says cut out			-63
verb says dig			-22
verb says do		-81
verb says drill			-12
verb says dry		-49	-76
verb says file		25
verb says fill		40	57
verb says finish		49	-21
verb says fit		57	15
verb says fix		34	65
verb says flush		33
verb says fre			30
verb says get		-71
verb says give			-26
verb says glue		33	54
verb says go		-46	-67
verb says go back		-31
verb says go down		-76
verb says go in		-81
verb says go on		-45
verb says go up		-61
verb says grout		58	48
verb says hang		25	46
verb says hold			-60
verb says install			47
verb says keep		-21
verb says land		-14
verb says lay			54
verb says leave		-80	-21
verb says level			-64
verb says look		81
verb says make		-32	-27
verb says measure		12	68
verb says miss		-57
verb says mount			21
verb says move		42
verb says nail			-20
verb says open		-57
verb says owe		16
verb says pack			43
verb says paint		72	23
verb says pass			33
verb says patch		45	52
verb says pick		41
verb says pick up		41
verb says pin			-22
verb says plane		37
verb says plug			-19
verb says plumb			-33
verb says pour			-32
verb says prime		29
verb says pull		-21	16
verb says put			31
verb says put in		-118	-55
verb says redo		79
verb says replace		55	39
verb says reset			82
verb says return		51
verb says rip		23
verb says roll		12	-22
verb says run			-13
verb says sand		27	53
verb says scrape		32	35
verb says screw			-45
verb says scribe		38	43
verb says seal		52	37
verb says see		-37
verb says send		51
verb says set			61
verb says show up		-29
verb says shut			54
verb says sister			76
verb says sit		-66
verb says skim		80
verb says snug			23
verb says spray			31
verb says start		37
verb says stop		-15
verb says strip		36
verb says swap		66	48
verb says swing		-43
verb says take		-42	-62
verb says tape			32
verb says tell		-33
verb says test		49	64
verb says tighten			37
verb says top		-30	-62
verb says trim		19
verb says use			-35
verb says walk		17
verb says wire			43
verb says work			-44
verb says wrap			18
verb side			14
verb side copula			31
verb side imperative		12	-24
verb side none		18
verb side past		25	-16
verb side present		-13	-17
verb term defect		-54	-75
verb term finish			-35
verb term material		45	59
verb term part		52
verb term surface		40
verb term tool		45
verb turn back copula		32	-46
verb turn back modal		18
verb turn back none			-52
verb turn back owed		-45
verb turn back past		17	-44
verb turn come back			-61
verb turn done copula			-37
verb turn done none			-63
verb turn down copula			41
verb turn down none			-13
verb turn finish			-56
verb turn in copula		-71
verb turn in none		31	24
verb turn in present		67
verb turn install		32	17
verb turn new copula		16	-87
verb turn new imperative		70
verb turn new none		33	115
verb turn new owed		-42
verb turn new past		52	80
verb turn new present		-79
verb turn off copula		-30	-44
verb turn off none		28
verb turn on copula		44	39
verb turn on none		32	-34
verb turn on present		54
verb turn out copula			-52
verb turn replace		-13	67
verb turn take back		29	-50
verb turn take off		35	-65
verb turn take out			-62
verb turn up copula		-15	43
verb turn up none			79
verb turn up present		-27
verb use measure main		-14	-57
verb use measure side		-29	-56
verb use move main		-71	-40
verb use move side		-65	-50
verb use other main		-20
verb use other side		-30	-19
verb use return main		50
verb use say main		22
verb use say side		41
verb use see main		45	31
verb use see side		74
verb use use main			-37
verb use work main		58	33
verb use work side		29	25
where +1	-20	-15	-18
where -1	12	20
where -4		-13	-13
where here-after		13
where here-before	19	15	20
whole after at defect	27
whole after by defect	-14
whole after from defect	17
whole after on defect	-22
whole after quantity defect	-31
whole after quantity material	26
whole after quantity part	-52
whole after quantity word	44
whole after term defect	-17
whole after term finish	-19
whole after term material	33
whole after term part	35
whole after term size	-46
whole after term surface	41
whole after term verbish	-15
whole after term word	59
whole after word area	29
whole after word defect	-16
whole after word material	47
whole after word part	29
whole after word surface	25
whole after word word	-22
whole article a	-12	28
whole article none		-13
whole article the		18	14
whole behind about -3	-34
whole behind at +1	-31
whole behind at -1	-26
whole behind at -2	-33
whole behind at -3	-47
whole behind at -4	-25
whole behind at here-after	14
whole behind at here-before	35
whole behind behind -1	28
whole behind behind -2	-26
whole behind behind -3	-26
whole behind behind -4	-19
whole behind behind here-after	-35
whole behind by +1	-39
whole behind by -1	39
whole behind by -2	-15
whole behind by -3	-24
whole behind by -4	36
whole behind by here-after	-14
whole behind down here-before	-18
whole behind end +1	-13
whole behind end -1	-18
whole behind end -2	-19
whole behind end -4	-17
whole behind end here-before	17
whole behind for -1	79
whole behind for -3	30
whole behind from +1	-15
whole behind from -1	-28
whole behind from -2	-49
whole behind from -3	46
whole behind from -4	38
whole behind from here-before	45
whole behind in -1	-40
whole behind in -2	-12
whole behind in -3	-25
whole behind in -4	-26
whole behind in here-before	26
whole behind mark -1	-68
whole behind mark here-before	49
whole behind number +1	-22
whole behind number -1	65
whole behind number -3	-30
whole behind off -1	33
whole behind off -2	-18
whole behind off -4	36
whole behind off here-before	-30
whole behind on +1	-19
whole behind on -1	-30
whole behind on -3	36
whole behind out +1	39
whole behind out -1	-19
whole behind out -2	-20
whole behind out -3	32
whole behind out -4	-13
whole behind quantity +1	-22
whole behind quantity -1	47
whole behind quantity -3	-36
whole behind quantity here-after	15
whole behind quantity here-before	20
whole behind term +1	-16
whole behind term -1	-22
whole behind term -3	18
whole behind term -4	-18
whole behind term here-after	22
whole behind to -1	44
whole behind to here-after	17
whole behind to here-before	19
whole behind up -1	21
whole behind up -2	46
whole behind up -3	-25
whole behind up -4	-18
whole behind with +1	-14
whole behind with -2	-34
whole behind with -4	-14
whole behind with here-after	-17
whole behind word -1	12
whole behind word -2	20
whole behind word -4	-13
whole behind word here-before	13
whole between get a	24
whole between has	54
whole between is	-20
whole between still	-14
whole counted bare	16
whole counted length		-30	-28
whole counted pack		-15	-36
whole counted pressure	-25
whole does ask area		-33
whole does ask defect		-12
whole does ask fixture		-34
whole does ask material		27
whole does ask part		-33
whole does ask verbish		13
whole does ask word		21
whole does be area		-15	-16
whole does be defect		-29
whole does be finish			-14
whole does be fixture		-13	-25
whole does be material		38	-29
whole does be part		16	-34
whole does be size		-18
whole does be surface		33
whole does be tells			-35
whole does be tool		-15
whole does be verbish		26	-17
whole does be word		12
whole does bring fixture		-13
whole does bring part		-16
whole does bring word		64
whole does call defect		-16
whole does call material		18
whole does call part		-15
whole does call surface		31
whole does change area			-27
whole does change word		86	22
whole does clean part			-22
whole does come defect		-14
whole does come fixture		35
whole does come material		31
whole does come part		49
whole does come verbish		24
whole does come word		-15
whole does cut area			-32
whole does cut fixture		24	54
whole does cut material		59
whole does cut part			81
whole does cut surface			32
whole does cut word		-34	42
whole does do defect		-22
whole does do fixture		58
whole does do material		-80
whole does do part		54
whole does do surface		16
whole does do word		33
whole does finish area			15
whole does finish material			71
whole does finish surface			56
whole does finish word			-15
whole does fre word			37
whole does get area			-19
whole does get fixture		38	-28
whole does get material		44	-74
whole does get part		87	34
whole does get surface		-40	45
whole does get tool		-19
whole does get verbish		-24	-25
whole does get word		-68	-30
whole does glue material			14
whole does glue surface			39
whole does glue word			-32
whole does go fixture		-16
whole does go material		41	65
whole does go part		-31
whole does go surface		-50	78
whole does go verbish		-14
whole does go word		-18	-35
whole does hang fixture			-33
whole does hang material		-12	30
whole does hang part			-21
whole does hang surface			-31
whole does hang word		-15	-24
whole does have word		27	-31
whole does i'll word		-51
whole does leave material		81
whole does leave part		-17
whole does leave word		-44
whole does let material		25
whole does let word		-45
whole does look defect		-30
whole does look word		-24
whole does move material		-13
whole does need area		-43
whole does need defect		29
whole does need fixture		46
whole does need material		-34
whole does need part		41
whole does need size		18
whole does need verbish		-60
whole does need word		41
whole does open word		-28
whole does pick word		-33
whole does pull area			-39
whole does pull material		14
whole does pull part			24
whole does pull surface			-43
whole does pull word			-33
whole does put area			-41
whole does put defect			-41
whole does put fixture			18
whole does put material		24	33
whole does put part		-25	73
whole does put surface		-47	-59
whole does put word		-62	-23
whole does replace material			-14
whole does replace part			45
whole does run material		25	-59
whole does run part			-18
whole does run word			-43
whole does sand defect		-37
whole does sand fixture		34
whole does sand material		-37
whole does sand word		-21
whole does say defect		-14
whole does say material		-13
whole does say surface		-42
whole does seal word			-27
whole does see part		35
whole does see word		53
whole does send word		-37
whole does set material		17	39
whole does set word		-29	-36
whole does swap defect			-28
whole does swap material		44
whole does swap part		68	-23
whole does swap word		-17	-38
whole does take defect		-22	-52
whole does take fixture		17
whole does take material		22
whole does take word		48	-24
whole does tape word			25
whole does tell material		-50
whole does test word			43
whole does wait material		17
whole does want defect		-28
whole does want fixture		51
whole does want part		-47
whole does want surface		-52
whole does want verbish		22
whole does want word		29
whole ends PREP	-18	42
whole ends Vmeasurei		22
whole ends Vmoveb	16	30	-23
whole ends Vmovep	-15
whole ends Vmoves	-16	-24
whole ends Vneedb	-27	-43
whole ends Vneeds	34	-32	-24
whole ends Votherb	-34
whole ends Votheri	-12	-37
whole ends Vsayb	-14
whole ends Vworkb			-19
whole ends Vworkbp	24	15	28
whole ends Vworkbpp	-17	-25
whole ends Vworki	19		-14
whole ends Vworkpp	-12
whole ends Vworks	-14	49	38
whole ends tarea	14	14	-12
whole ends tarea's	-17		14
whole ends tdefect	-12
whole ends tdefectVotherb	-18	-15	80
whole ends tdefectVotheri		-32	-22
whole ends tdefectVotherp	-28
whole ends tdefectVotherpp	-15	-20	-34
whole ends tdefectVothers	-19	-26	37
whole ends tdefectVworkbpp		39	-18
whole ends tdefectVworki		-21	-13
whole ends tdefectVworkp		-39	-18
whole ends tdefectVworkpp		-16	-28
whole ends tdefectVworks	-14	41	-16
whole ends tfinish	-14	-23
whole ends tfinishVworkb	-14	33
whole ends tfixture	14	17	15
whole ends tfixture's	14
whole ends tfixtureVworkb	-19		-30
whole ends tfixtureVworks	-24
whole ends tmaterial			22
whole ends tmaterial's		68	-15
whole ends tmaterialVworki		54	-37
whole ends tmaterialVworks		-21
whole ends tpart		12
whole ends tpart's		14	35
whole ends tpartVotherb	-24
whole ends tpartVothers	45	-38
whole ends tpartVworkb			27
whole ends tpartVworks	29		-20
whole ends tsurface		17	17
whole ends tsurface's			-19
whole ends tsurfaceVotherb		-14
whole ends tsurfaceVworkb		-18
whole ends tsurfaceVworki		22	-28
whole ends tsurfaceVworks	-28	-20	15
whole ends ttool			-12
whole ends ttoolVworkb	15	-15
whole ends ttoolVworks	-13
whole ends twork	-20	35
whole ends w's	-22	-40
whole ends wed		-18	-29
whole ends wing	-44		-21
whole far after 0			23
whole far after 1	32	43
whole far after 13+		-26
whole far after 2	-21	14
whole far after 5-7			-14
whole far after 8-12	-15		-22
whole far before 0		14
whole far before 1		-18
whole far before 13+	-16
whole far before 2	23		-15
whole far before 5-7			27
whole far before 8-12		16
whole figure-between	46
whole flawed		20	33
whole frame copula +1		-14	-17
whole frame copula -1			-35
whole frame copula -2		15	-18
whole frame copula -3		-25	-23
whole frame copula -4	-16	-34
whole frame copula area		23
whole frame copula defect		-31
whole frame copula finish		-59	-32
whole frame copula fixture		24	-12
whole frame copula here-after	-16		15
whole frame copula here-before		22	36
whole frame copula material		-16
whole frame copula part			-15
whole frame copula size		-22
whole frame copula surface		42
whole frame copula tells			-36
whole frame copula tool		-46	-12
whole frame copula word		-19	-12
whole frame copula work			-22
whole frame imperative +1	42	-24	-14
whole frame imperative -1			83
whole frame imperative -2		-14	-55
whole frame imperative -3		-20
whole frame imperative -4	-44		59
whole frame imperative defect		-12	-16
whole frame imperative finish		-23
whole frame imperative fixture			88
whole frame imperative here-after	27	24
whole frame imperative material			-32
whole frame imperative size		15
whole frame imperative surface			27
whole frame imperative tells		44
whole frame imperative tool		-43
whole frame imperative verbish		-19	-19
whole frame imperative word		-18
whole frame modal +1	-43	-23
whole frame modal -1		24
whole frame modal -2	27
whole frame modal -3	75	15
whole frame modal -4	-16	-16
whole frame modal finish		-39
whole frame modal fixture		31
whole frame modal here-after	49	-15
whole frame modal material		17
whole frame modal size		-17
whole frame modal verbish		-15
whole frame modal word		-19	-32
whole frame none +1	-22
whole frame none -1	16	28	42
whole frame none -2			17
whole frame none -3		30	-25
whole frame none -4		-24	-15
whole frame none area		-26
whole frame none defect			-13
whole frame none finish		57	48
whole frame none fixture		-27
whole frame none here-after	13	-13	30
whole frame none material		14	21
whole frame none part		37
whole frame none size		-28	18
whole frame none surface		27	24
whole frame none tells		-37
whole frame none tool		48
whole frame none work		-36	27
whole frame owed -1	26
whole frame owed -2	-55	15
whole frame owed -3		37
whole frame owed -4	-12
whole frame owed area		57
whole frame owed defect		-17
whole frame owed finish		-15
whole frame owed fixture		17
whole frame owed here-after		39
whole frame owed here-before	47	43
whole frame owed part		46
whole frame owed size		26
whole frame owed tells		35
whole frame owed tool		27
whole frame past +1		-46	-16
whole frame past -1			20
whole frame past -2		37	12
whole frame past -3	-25	-32
whole frame past -4		-35	-25
whole frame past area			-29
whole frame past finish		30	-52
whole frame past fixture		53	26
whole frame past here-after	33	30
whole frame past here-before	31	44
whole frame past material		54	16
whole frame past part			21
whole frame past size		-36
whole frame past surface		-39
whole frame past tells			22
whole frame past tool		-31
whole frame past verbish		-29	-32
whole frame past word		-59
whole frame past work			12
whole frame present +1	-30	37	-21
whole frame present -1	-20		34
whole frame present -3		-21	23
whole frame present -4	-15		18
whole frame present defect			38
whole frame present finish			31
whole frame present fixture			20
whole frame present here-after		31
whole frame present here-before	22
whole frame present material		16	31
whole frame present part			21
whole frame present size			18
whole frame present surface			-34
whole frame present tells		-26	20
whole frame present verbish			22
whole frame present word			-49
whole head air	17		37
whole head anybody		-27
whole head anything		-17
whole head attic	-32	-45	-18
whole head b			42
whole head back door	-30
whole head backsplash	-13	72	-13
whole head bad	-26	-45
whole head bag	-33
whole head bar	-25	-27	-41
whole head base	33	-13	55
whole head basement	53		-29
whole head bath	-35	15	-14
whole head bathroom	22	-36	23
whole head bay	73	-28	-43
whole head bed		-12	17
whole head bedroom		-18	-27
whole head bifold	18
whole head bit	-16
whole head black		-38	-15
whole head blade	-22
whole head blinds	55		33
whole head blue tape	-14
whole head board			46
whole head boards		74	-16
whole head bolt	-18
whole head bolts	-19	-16	52
whole head bottom		-36	-24
whole head bowl	19
whole head box	15	31	23
whole head bracket	-15	-14	80
whole head brackets		-13
whole head breaker	-27	-39
whole head broken	-32
whole head button	-16
whole head c	-18
whole head cabinet	-17	99
whole head cabinets			-22
whole head cable			-68
whole head cap		15
whole head carpet		-44	-14
whole head casing	-13
whole head caulk		60
whole head ceiling	92	62	-21
whole head chimney	-18
whole head chip	-55
whole head clamps	-13
whole head clear	-14	33
whole head closer	-22
whole head closet	37	18	-15
whole head closet rod	47
whole head co	20
whole head coat		-36	-31
whole head code		-24
whole head cold	-19		-18
whole head color	36
whole head corner		-18	-59
whole head corridor	26
whole head counter	27	99
whole head cover	-12
whole head crack	-19		114
whole head cracked	-15
whole head crown's			20
whole head cut		-24
whole head cut out	-46
whole head damper	-45
whole head dead		-20
whole head deck	-25		59
whole head den	37
whole head dimmer	-49	47
whole head ding		-14
whole head dining room	61	40	-43
whole head dishwasher	-33
whole head disposal			98
whole head door	32	19	36
whole head door's	-48	38	15
whole head doors	48		21
whole head downspout	18
whole head drain	25		14
whole head drawer			23
whole head drip	40		-15
whole head drop	-19		32
whole head drops	-12	-38	-18
whole head dry	34	53
whole head drywall		-41
whole head duct	-16
whole head due		-37
whole head duplex	-29
whole head edge	-21	22	70
whole head end			-25
whole head end panel		-43
whole head entry			14
whole head epoxy		-65
whole head except	-22	-62	-18
whole head extra	-14
whole head falls	-46
whole head fan	42	-67
whole head faucet	-15		55
whole head filter	-22
whole head filters	18
whole head first		30
whole head first coat	-32	33	52
whole head flange	57		-46
whole head flat	-26	-22	-30
whole head flex	43
whole head floor	58	-25	60
whole head floor's	67	51
whole head foam	-16	-28	-40
whole head frame	48		-27
whole head fridge	38	-37	32
whole head front		-16	51
whole head front door	46
whole head full	-27	-26
whole head furnace	-29
whole head gap		-14
whole head garage	-41	-33	57
whole head gary	-21
whole head gas	14
whole head gasket	-18	37	-65
whole head glass		48
whole head glue	-13		-76
whole head go	-27
whole head goes	-22
whole head grease	-13
whole head grout		29
whole head hair	-22
whole head hall	17	50
whole head hall bath			-16
whole head hallway	-15
whole head hand	-16
whole head handle	-22	-57	24
whole head handrail	25
whole head hard			-21
whole head hatch	51
whole head head	47
whole head height			-44
whole head hinge		-39	50
whole head hinges	28	16	-19
whole head hole	23	34
whole head holes	64	36	23
whole head hollow		-18
whole head hose	19	14
whole head hose bib		-68
whole head hot	25	20
whole head hot side	-13
whole head house		-28
whole head inside	-18	42
whole head itself	-15
whole head jamb		13
whole head job		39	-17
whole head joint	59		71
whole head joist		-41	-30
whole head joists		-54
whole head kit	-12	-18
whole head kitchen	-29	41	-47
whole head kitchen faucet	-62
whole head ladder		27
whole head landing	-17
whole head latch	-21		16
whole head laundry	50
whole head layers	-51
whole head leak			-35
whole head leaking			17
whole head leaning		-34
whole head leg	-15
whole head legs			-40
whole head let go	-34
whole head lid		20	56
whole head light	30	-36	-66
whole head line	-16	-29	28
whole head lip	-21
whole head living room	-21	-23
whole head lock	-31	-37
whole head loose			-16
whole head luis	-13
whole head main	21
whole head me		-15
whole head meter		-53
whole head middle		-19
whole head mirror			18
whole head missing		-23	-22
whole head miter	-14
whole head mud	-14	70
whole head nail	16
whole head needs	-20
whole head nice	-20
whole head nosing		-38
whole head number	12	74	-43
whole head nut	-15
whole head oak		45
whole head office	-16
whole head opening	25
whole head outlet	73	30	75
whole head outlets	41
whole head outside	-25
whole head oven	-12
whole head paint		-69
whole head pan	-50		18
whole head panel			-20
whole head pantry	-17
whole head paper	-17	-31
whole head piece		24
whole head pipe		53
whole head place			-31
whole head plaster	-15
whole head plate	-42	-62
whole head plates	23	16
whole head pocket door	24
whole head poly		74
whole head post	30	40
whole head primer			-56
whole head pull		28
whole head pulls	61	45
whole head pump	51	-27
whole head punch	-35
whole head putty		-45
whole head quiet	-19
whole head r	-13
whole head rack	-32
whole head rail		-25	45
whole head rain	-16	-29	-12
whole head range	-24
whole head reveal	-29		-12
whole head rick		-16
whole head ring	-35
whole head rm	139
whole head rock	-25	-15
whole head rod	-18
whole head roof	103		111
whole head room		-15
whole head round	-19	20	-39
whole head row	-15
whole head run	24	15	28
whole head runs	-14	49	-17
whole head salon	-49		-41
whole head sand	-13	-75
whole head screen	-13
whole head screw	14	-20	-75
whole head screws	15		-53
whole head seam		-22	13
whole head second coat	-42	-67	65
whole head sheet	53
whole head shelf	-18	46	21
whole head shop	-57	-16
whole head shot	-28
whole head shower	-36		49
whole head side	-36	-24	-64
whole head sides	-25	-21
whole head siding		98
whole head silicone			22
whole head sill		62
whole head sink	-18	15	32
whole head skirting	-22
whole head slab	47	93	27
whole head slider	34
whole head slope	-21
whole head smoke	100
whole head soffit	61
whole head soft	-16	39
whole head sorry	-16
whole head split		39	-18
whole head spot	-77	56
whole head stain	-60
whole head stair	-25
whole head stairs	-29	-51	-44
whole head steps	25	45
whole head stone		-53
whole head store	16
whole head straight	-19
whole head strike	-38	31	39
whole head stripped			-13
whole head studs	-20	13
whole head supposed	-15	25
whole head sweep	-17
whole head switch	63
whole head t	81
whole head tank	-35
whole head tap	-14
whole head tape		26	29
whole head temp	-19
whole head template		33
whole head threshold	12
whole head tile		46	35
whole head tiles	27	17	40
whole head toilet	-13		34
whole head too long	-17
whole head top		-16	-18
whole head track	-41
whole head trap	16	-13	67
whole head tray		79
whole head tread		30
whole head treads	-24		-20
whole head trim	76	-36	34
whole head truck	13	39
whole head tub	95	-62	18
whole head unit	-41
whole head uppers		-25	-52
whole head upstairs	22	20	22
whole head us		-12
whole head valve	-33	-71	-16
whole head van		-17
whole head vanity			-44
whole head vent	32	29
whole head wall		15	-41
whole head wall bend			-23
whole head wall's	18	-21	-18
whole head walls	-27	-39	-21
whole head wants	52	-23
whole head washer			-31
whole head water		-38	-112
whole head water's	-22
whole head wax ring	-53
whole head weatherstrip	-17
whole head weeping		-19
whole head weight	-12
whole head wet		-32
whole head white		-27
whole head whoever	-17
whole head window	69	-30	33
whole head windows	-13
whole head wire	17	63	87
whole head wood			-22
whole head wrong	-15
whole heading +1			-30
whole heading -1	35	-16	30
whole heading -2	-32	21	-19
whole heading -3	14		14
whole heading -4	-12	22
whole heading here-after	17		46
whole kind +1 area	-19
whole kind +1 defect			-19
whole kind +1 fixture		-15
whole kind +1 material	-13	-23	-14
whole kind +1 part			-15
whole kind +1 size		-16	-18
whole kind +1 surface	-15		-17
whole kind +1 tells	-25		-23
whole kind +1 tool		-30
whole kind -1 area	20
whole kind -1 defect	-28
whole kind -1 finish	-31	30	-20
whole kind -1 fixture	33	61	52
whole kind -1 material			27
whole kind -1 part	19	37	49
whole kind -1 size	-81	15	14
whole kind -1 surface		-18
whole kind -1 tells		-21	66
whole kind -1 tool	40	-37	-15
whole kind -1 verbish		38	-19
whole kind -1 word			-14
whole kind -2 area		19	-27
whole kind -2 defect	-21
whole kind -2 finish		-36	44
whole kind -2 fixture	21	43	-13
whole kind -2 material	-16	14	12
whole kind -2 size	34	-35	59
whole kind -2 surface			17
whole kind -2 tells	-24	55	-28
whole kind -2 tool		-13	14
whole kind -2 verbish		-26	-21
whole kind -2 work	-13
whole kind -3 area	39		-43
whole kind -3 defect	-15	-36	-18
whole kind -3 finish	-19	30	-18
whole kind -3 fixture	22	-13	14
whole kind -3 material		22
whole kind -3 part			19
whole kind -3 size	-36	17	-48
whole kind -3 surface	20	13
whole kind -3 tells		-34	-20
whole kind -3 tool	-26	28
whole kind -3 word	-15		-14
whole kind -3 work	-16
whole kind -4 finish		-28	-25
whole kind -4 fixture	-21	-26
whole kind -4 material		-13	-15
whole kind -4 part			-12
whole kind -4 size	-16	-30
whole kind -4 surface		15	-12
whole kind -4 tool		-21	-14
whole kind -4 word		-14	-15
whole kind -4 work		-32
whole kind area	15
whole kind defect	-14
whole kind finish	-14
whole kind fixture	13	13	13
whole kind here-after area	13	-39	19
whole kind here-after defect	-15	25
whole kind here-after finish	-23
whole kind here-after fixture	13	15	14
whole kind here-after material	45	55
whole kind here-after part	38	68
whole kind here-after surface	18	48	60
whole kind here-after tool		54
whole kind here-after verbish	-16	-43
whole kind here-after word		-42
whole kind here-before area			30
whole kind here-before defect	52
whole kind here-before finish	20
whole kind here-before fixture		18	14
whole kind here-before material	25	15	38
whole kind here-before part		43	30
whole kind here-before size	69		-15
whole kind here-before surface	13	63
whole kind here-before tells	-23
whole kind here-before tool		47
whole kind here-before verbish	-44	-50
whole kind tells	-16	14
whole kind verbish			-12
whole kind word		-12
whole kind work	-24	36
whole lead a -1	38
whole lead a -2	-34
whole lead a -3	-33
whole lead a -4	12
whole lead a here-before	-18
whole lead area -1	-40
whole lead area -3	39
whole lead area here-before	22
whole lead fixture -2	-31
whole lead fixture -4	-35
whole lead fixture here-before	29
whole lead material -1	-40
whole lead material -2	-25
whole lead material -3	-23
whole lead material -4	-27
whole lead material here-before	19
whole lead number -1	22
whole lead number -3	66
whole lead number here-before	28
whole lead part -1	-15
whole lead part -2	-22
whole lead part -3	-37
whole lead part -4	-21
whole lead quantity -1	29
whole lead quantity -2	-16
whole lead quantity -3	22
whole lead quantity -4	-22
whole lead quantity here-after	18
whole lead quantity here-before	44
whole lead size -1	-35
whole lead size here-before	34
whole lead surface here-after	-15
whole lead surface here-before	13
whole lead that -2	-29
whole lead that -4	13
whole lead the -1	-47
whole lead the -2	-27
whole lead the -4	-23
whole lead the here-after	-24
whole lead the here-before	-23
whole lead tool -2	-18
whole lead tool here-before	54
whole lead verbish -1	-22
whole lead verbish here-after	-40
whole lead with -4	-12
whole lead with here-before	31
whole lead word -3	22
whole lead word -4	-25
whole lead word here-after	19
whole lemma be object	-16
whole lemma drip subject	39
whole lemma find object	36
whole lemma get object	-54
whole lemma get subject	-45
whole lemma go subject	-17
whole lemma have subject	41
whole lemma have subject-late	25
whole lemma leave object	15
whole lemma run subject	-22
whole number many many		48	30
whole number many one		-46	-20
whole number one many			-21
whole number one one		17	22
whole opens PREP	-13	-35	-26
whole opens Vmoveb			15
whole opens Vmovep	-32
whole opens Vmovepp	-16	-14
whole opens Vmoves		-24
whole opens Votherb	-31	-25	14
whole opens Vworkb	-22	-18	-18
whole opens Vworki	18	-13	13
whole opens Vworkpp	-30	-15	-18
whole opens Vworks		29	49
whole opens tarea	18
whole opens tarea's	-19		16
whole opens tdefect	-16	-14	-16
whole opens tdefectVotherb	-33		70
whole opens tdefectVotheri		-40	-17
whole opens tdefectVotherp	-29	-24
whole opens tdefectVotherpp	-15	-20	-34
whole opens tdefectVothers	-19	-27	44
whole opens tdefectVworkbpp	-13	22
whole opens tdefectVworki	-12	-21	-13
whole opens tdefectVworkpp		-16	-28
whole opens tdefectVworks	-14	32	-21
whole opens tfinish	-14		-36
whole opens tfinishVworkb		26	-21
whole opens tfinishVworkpp		-19
whole opens tfixture	16		32
whole opens tfixture's	30		38
whole opens tfixtureVworkb	-21	-28	14
whole opens tfixtureVworks	-19
whole opens tmaterial		23
whole opens tmaterial's	18	39
whole opens tmaterialVworkb		39
whole opens tmaterialVworki		38	-37
whole opens tmaterialVworks	17		-29
whole opens tpart	17	20	35
whole opens tpart's		33	43
whole opens tpartVotherb	-23	-26	-27
whole opens tpartVworkb			38
whole opens trole	-33	13
whole opens trole's	-43	-12
whole opens tsurface		12
whole opens tsurface's		14	-17
whole opens tsurfaceVotherb		-34	-18
whole opens tsurfaceVworkb		-18	-23
whole opens tsurfaceVworki		-16	-13
whole opens tsurfaceVworks	-24	30	15
whole opens ttool			-23
whole opens ttool's		-31
whole opens ttoolVworks		12
whole opens twork	-22
whole opens w		-14	-18
whole opens w's	-29	-41
whole opens wed		-24	12
whole opens wing		-26	-35
whole opens-with -1	50
whole opens-with -2	25
whole opens-with here-after	25
whole part +1 bare			-16
whole part +1 object	-16
whole part +1 opens	-20
whole part +1 subject		-26	-18
whole part +1 subject-late		-24	-28
whole part -1 bare	-16
whole part -1 object			-17
whole part -1 opens	26	18	22
whole part -1 subject		31	39
whole part -1 subject-late	-38
whole part -2 bare			-25
whole part -2 subject		23	28
whole part -3 bare	-22		-14
whole part -3 object			-18
whole part -3 subject-late	38	20	28
whole part -4 bare	-14	-19	-24
whole part -4 object	-17	-16
whole part -4 opens		21
whole part -4 subject			-21
whole part -4 subject-late		-16
whole part bare			-13
whole part bare area	14		-14
whole part bare defect	-15	-18	-46
whole part bare finish			-13
whole part bare fixture	-32	-30	-25
whole part bare material		-29
whole part bare part	22	46
whole part bare size	-13	23	76
whole part bare surface	-24		-24
whole part bare tells	15		26
whole part bare tool		-27
whole part bare verbish	-15
whole part here-after bare	-13		23
whole part here-after object		26
whole part here-after opens	35		26
whole part here-after subject	-31	32	36
whole part here-after subject-late	-15	-37
whole part here-before object	-25	47	-52
whole part here-before opens	15	14
whole part here-before subject	19	21	30
whole part here-before subject-late			18
whole part object	-15		-15
whole part object area	20
whole part object defect	-14
whole part object finish	-17	-16
whole part object part		14	15
whole part object size		24	-17
whole part object surface			-26
whole part object tells	-25	31
whole part object tool	-14		-15
whole part object verbish		-21	-14
whole part object word	-16	-12	-21
whole part object work	-14
whole part opens area		75	-20
whole part opens defect		18
whole part opens finish			12
whole part opens fixture	35	44	40
whole part opens material			25
whole part opens size	-15	-60	-23
whole part opens surface		33	50
whole part opens tells	-20
whole part opens tool			-20
whole part opens verbish	-14	42	-26
whole part opens word		-19
whole part opens work		58
whole part subject		14	19
whole part subject area	22	-17
whole part subject defect	-19	-60	19
whole part subject finish	-14
whole part subject fixture		20
whole part subject material		30
whole part subject size		-22
whole part subject surface		18	49
whole part subject tells		-22
whole part subject tool	24	-12
whole part subject verbish			19
whole part subject word			19
whole part subject work	-30	-35	13
whole part subject-late area		-25	-23
whole part subject-late defect		-26	32
whole part subject-late finish			26
whole part subject-late fixture	27		40
whole part subject-late material	-13	27	17
whole part subject-late part	-34	26
whole part subject-late surface	23	-16	-30
whole part subject-late verbish	-19	29	-23
whole part subject-late word		-22
whole person	-38		-12
whole points both -1			18
whole points both -3			18
whole points both opens			50
whole points both subject			-44
whole points em -1			14
whole points em -2		-19	-48
whole points em -3		17	-45
whole points em -4		-30	78
whole points em object		-24
whole points em opens			33
whole points it +1		-34	-19
whole points it -1		16	27
whole points it -2		17	14
whole points it -4		-14
whole points it bare			-19
whole points it here-after		-34	-46
whole points it here-before		-17	18
whole points it object		-18	-26
whole points it opens		43
whole points it subject			49
whole points it subject-late			15
whole points none +1			-15
whole points none -1			12
whole points none -4		-16	-26
whole points none here-after		21	23
whole points none here-before		48	32
whole points none object			-17
whole points none subject		15	14
whole points one +1		-25	-31
whole points one -1		40	14
whole points one -2		-25	57
whole points one -3		35
whole points one -4			24
whole points one bare		-16	-15
whole points one here-after		-38
whole points one here-before		34	-58
whole points one opens		42	-87
whole points one subject		20	37
whole points one subject-late			130
whole points that +1		-26	-18
whole points that -1		33	-21
whole points that -2		23	24
whole points that -3		12
whole points that bare		-38	-105
whole points that here-after		-13	-20
whole points that here-before		18	44
whole points that object			15
whole points that opens		13	-31
whole points that subject		34	45
whole points them -1		17	81
whole points them -2		-52
whole points them -3		-15	-24
whole points them -4			-39
whole points them bare		-33
whole points them object		-12	14
whole points them opens		-23
whole points them subject		21	-54
whole points they -1		32
whole points they -2		36
whole points they -3		-64
whole points they -4		-12
whole points they bare		47
whole points they object		-23	69
whole points they subject-late		19
whole points this object		75
whole points those +1		33
whole points those -1		56
whole points those -2		-21
whole points those -3		-18
whole points those bare		45
whole points those opens		-52
whole points those subject		-59
whole points those subject-late		43
whole prep above	-23
whole prep after	-23	-53
whole prep along	-18	-35	-15
whole prep around	-16		-35
whole prep at	-17	-25	-31
whole prep before	-23		13
whole prep behind	60	54
whole prep below			-24
whole prep between		19	-57
whole prep by	-25	-62	-62
whole prep down	-16		-31
whole prep for	-25
whole prep from	-38	-35	-43
whole prep here-after at	-22
whole prep here-after from	-72
whole prep here-after in	-28	-80	-42
whole prep here-after of	-14	57	26
whole prep here-after on	54	25	-21
whole prep here-after to		-18
whole prep here-after with		32	-36
whole prep here-before behind	30
whole prep here-before in			-18
whole prep here-before of	19
whole prep here-before on	-29
whole prep in		-35
whole prep into			-64
whole prep near		-49
whole prep of	-22
whole prep off	22	-31	-29
whole prep other above	-23
whole prep other after	-19
whole prep other along	-20	-21
whole prep other around	-17
whole prep other at	-17	-24	-30
whole prep other before	-23		13
whole prep other behind	38	23
whole prep other below			-24
whole prep other between		16
whole prep other by	-33	-64	-64
whole prep other down	-16		-31
whole prep other for	-24	22
whole prep other from	-22	-39	-37
whole prep other in		-30
whole prep other into			-64
whole prep other near		-50
whole prep other of	-26		-12
whole prep other off	18	-30	19
whole prep other on	-13	-13
whole prep other out	-13
whole prep other over	-19	-36	-21
whole prep other to	-23		-27
whole prep other toward	-39
whole prep other under	-35	-37	-26
whole prep other up	-28	-36	33
whole prep other with	-14	-46	-34
whole prep other without		-32
whole prep out	-14		13
whole prep over		-36	-21
whole prep through	53
whole prep to	-24		-21
whole prep toward	-45
whole prep under	-17	-37	-30
whole prep up		-31	33
whole prep with	-16	-35	-39
whole prep without		-32
whole rank after 2	-14		-16
whole rank after 3			-17
whole rank after 4	-20
whole rank before 0	12
whole rank before 2	-12
whole rank before 4		-18	-45
whole says imperative			17
whole says modal		-22	-28
whole sentences -1	-46	-35	-34
whole sentences -1 bare	-24	-20	-17
whole sentences -1 object	-25	-39	-19
whole sentences -1 opens	-31	-38	-40
whole sentences -1 subject	-20
whole sentences -1 subject-late	-19	-15	-69
whole sentences -2	-31	-44	-43
whole sentences -2 bare			-19
whole sentences -2 object	-19	-18	-23
whole sentences -2 opens	-27	-67	-39
whole sentences -2 subject	-26	-32	-37
whole sentences -2 subject-late			-16
whole sentences 1	-16	-30	-15
whole sentences 1 bare	-20	-15
whole sentences 1 object	-13	-13	-13
whole sentences 1 opens	-13	-37	-17
whole sentences 1 subject		-30
whole sentences 1 subject-late		-15	-17
whole sort PREP	-13	27	-17
whole sort Vmeasurei		17	-20
whole sort Vmoveb		26
whole sort Vmovep	-23	-19
whole sort Vmovepp		-25
whole sort Vmoves	-13	-24
whole sort Vneedb	-27	-43
whole sort Vneeds	16	-35	-24
whole sort Votherb	-42
whole sort Votheri		-39
whole sort Vsayb	-14
whole sort Vworkb		-19
whole sort Vworkbp	24	15	28
whole sort Vworkbpp	-19		-36
whole sort Vworki			-14
whole sort Vworkpp	-29	-23
whole sort Vworks		49	38
whole sort w		-12	-19
whole sort w's	-31	-41	-17
whole sort wed		-20
whole sort wing		-16	-37
whole stands after	-12	-19	-19
whole stands after 0 of 0		-18	-17
whole stands after 0 of 1		-17	-17
whole stands after 0 of 2		-20	-14
whole stands after 0 of 3	-14	-17
whole stands after 1 of 1	-14		-12
whole stands after 2 of 2	-12
whole stands after has 0		-20	-17
whole stands after has 1		-18	-20
whole stands after has 2	-13	-24	-17
whole stands after has 3		-19
whole stands after points it		-22	-27
whole stands after points it's	-17		-36
whole stands after points nothing		-18	-15
whole stands after points one		-17	-36
whole stands after points that		-16	-18
whole stands after points those		-14
whole stands before 0 of 2		-25
whole stands before 0 of 3		-34
whole stands before 1 of 0	-20		-16
whole stands before 1 of 2		19
whole stands before 1 of 3		33
whole stands before 2 of 0		-21	27
whole stands before 2 of 1		18
whole stands before 2 of 2	-15
whole stands before 2 of 3		22
whole stands before 3 of 0			-28
whole stands before 3 of 1			-13
whole stands before 3 of 2	-16		22
whole stands before 3 of 3		-18	25
whole stands before 4 of 0		-18	-45
whole stands before 4 of 2	-23
whole stands before 4 of 3	16
whole stands before has 0	-20	-23	-30
whole stands before has 2	-19
whole stands before points both			-13
whole stands before points em			-45
whole stands before points it			16
whole stands before points it's	70
whole stands before points one		33	16
whole stands before points ones			41
whole stands before points that		17	14
whole stands before points them		-63	16
whole stands before points they're		-31
whole stands before points this		44
whole stands before points those			-16
whole stands here		28	23
whole stands here 0 of 2		35	26
whole stands here 0 of 3	34	36	46
whole stands here 1 of 2		18
whole stands here 1 of 3		-21	-15
whole stands here 2 of 3	-19		-35
whole stands here 4 of 3	-18
whole stands here has 2		33	25
whole stands here has 3	14	21	19
whole stands here points both			15
whole stands here points it		-14	23
whole stands here points it's	14	25
whole stands here points nothing		32	27
whole stands here points one		-17
whole stands here points that		15	21
whole stands here points that's		63	-20
whole stands here points them		98
whole stands here points they		60
whole stands here points those		-31
whole subject none -1	17
whole subject none here-after	15
whole subject own +1	-13
whole subject own -1	-15
whole subject own -3	-12
whole subject own -4	-17
whole subject own here-before	17
whole subject person -1	15
whole subject person -3	-34
whole subject person -4	-41
whole subject person here-after	-27
whole subject person here-before	27
whole subject pointer +1	-20
whole subject pointer -1	44
whole subject pointer -3	16
whole subject pointer here-after	12
whole subject tells -1	21
whole subject tells -2	-33
whole told as done after		-19
whole told as done here		49
whole told as fixed after		-30	-24
whole told as fixed before			26
whole told as fixed here			-47
whole told as have before	-42	19
whole told as need after		-17	-19
whole told as need before	-17	-59	-58
whole told as need here	19
whole told as open after		-32	-28
whole told as open before		30
whole told as open here			46
whole told as used before		-37	-53
whole told as used here	26		13
whole touches-after	21
whole unit none area	15
whole unit none defect	-14
whole unit none finish	-14
whole unit none fixture	13
whole unit none tells	-16
whole unit none work	-24
whole use buy	-19
whole use have		33	20
whole use measure	20	-22	-14
whole use move	-25		17
whole use need	-18
whole use other			16
whole use see	-30		-50
whole use use	-21	-43
whole where +1	-13		-17
whole where -1			15
whole where -3			-13
whole where -4	-12	-14	-15
whole where here-after			17
whole where here-before	14	28	21
whole word air	13
whole word anybody		-28
whole word anything	-15	-18
whole word arm	-25
whole word b	-15	-19	28
whole word back	31
whole word bad	-27	-51	-15
whole word bag	-33
whole word bed		-12	16
whole word bedroom	-44
whole word bench	23	62
whole word big		-50	-50
whole word board			41
whole word boards		74	-16
whole word bottom			14
whole word bowl	19		-34
whole word box	14	28	22
whole word br	-39
whole word button	-16
whole word c	-49	62	-20
whole word code		-24
whole word cold	-13		-18
whole word color	28	-36
whole word counter	24	138	21
whole word cut			-14
whole word defect	-16
whole word dining		15
whole word double	-13
whole word dry	34	50
whole word due		-37
whole word electric		16
whole word end			-26
whole word ends		-32
whole word except	-37	-65	-18
whole word extra	-15		-24
whole word face		-27
whole word finish	-15		-16
whole word first	59	84	-14
whole word front	-25	41	18
whole word full	-31	-47	-13
whole word go	-30
whole word god	18
whole word goes	-18
whole word gone		-19
whole word hair			-17
whole word hand	-18	42
whole word hanging	-22
whole word hard		-14
whole word head	28	38	19
whole word height			-44
whole word hot	23		40
whole word house	-30	-29	-19
whole word inside	-34	42
whole word instead	-14
whole word itself	-15
whole word job		39	-17
whole word kit	-12	-18
whole word last	47	-84	-37
whole word layers	-51
whole word left		-23
whole word lid	-20	-22	24
whole word little		-31	-29
whole word longer	-19	13
whole word luis	-14
whole word make	33
whole word me		-15
whole word n	-19		-46
whole word needs	-20
whole word nice	-24
whole word number	-15	20	41
whole word off	-12
whole word old		18	14
whole word other		23
whole word paper		-33	54
whole word piece		24
whole word place			-31
whole word problem		-20
whole word quantity	-23	-70
whole word quiet	-19
whole word r	-13
whole word rain	-16	-29	-12
whole word real	-27
whole word rear			-22
whole word rick		-16
whole word ring	-34	-15
whole word rm	102	-48	-74
whole word room		-15
whole word round	-27	-16	-39
whole word row	-15
whole word run	24	15	28
whole word same	-25		30
whole word second	-35	-48
whole word sheet	49
whole word sir	29
whole word slip	-24
whole word slow	44
whole word sorry	-18
whole word spot	-75
whole word store	16
whole word straight	-20
whole word suite	-18
whole word supposed	-15	25
whole word svc	-16
whole word t	75
whole word template		28
whole word third			16
whole word top		-19	-17
whole word total	-14
whole word twice	-14
whole word unit	-25	-31	-25
whole word up		-15
whole word upper	-30
whole word us		-12
whole word wants	31	-28
whole word weight	-12	-17
whole word whoever	-17
whole word wrong		-14
word a			13
word again		29
word air	-49	-17	-45
word all			-32
word already			-40
word altogether	-17
word an		19
word and		23
word another		109
word anybody		-72
word anyhow	-29
word anything		-33
word are			17
word around			-25
word arvo		-30
word at		-13	-21
word back	110	-17	-16
word bad	-13		18
word bag	-26	-39
word bath	31
word bed	-34	-13
word bedroom	-42
word behind			15
word bench	74	45
word better		-62
word big	-39	16	-63
word bled	-54	-14
word board	39	74	36
word boards	90		59
word bottom	-30	37	-13
word bowl	34
word box			23
word boxes	25
word boy	-36
word br	-32	-16
word c		-21	-35
word cab	-25
word case	13		-16
word center	-21		-23
word chunk	-12
word cock		16
word code	-25
word cold	-20		-20
word color	-60	84
word coming		17
word counter	27	16	13
word cover		73	-52
word ctr	13
word cut	30	43	43
word dave		-56
word defect	-25		-13
word different	-39
word dining		37
word disp	19
word do		-25
word dog	-30
word double	-19
word down		-22	30
word draft	-64
word dry	36	14
word earliest		39
word electrical	42
word else		-23
word em		35	-22
word end	29	-36	16
word ends		-22
word everywhere		-46
word except	-20	-29	-23
word extra			-23
word face	-18	-23
word factory		19
word far			-56
word fault	-23
word fell	30
word fella	-25	-50
word final		55
word finger	-45
word finish	-23	-16	-21
word fire		53
word first	71	-35	50
word float	78
word for			24
word fourth	-28
word free	-23		22
word from		31
word front	-46	79	43
word full		63	14
word furniture		58
word gary	-78	-21	-19
word get		35
word go	-21	20
word god	31	-24	-52
word goes	-19	34
word gone			13
word guy		-24
word hair		-23
word hand	-16	-66
word hanging		27	56
word hard	16
word have		-51
word head	32	-16	13
word height			27
word hendersons			-12
word herself		19
word him		39
word his		-13
word holding	-44
word home		-70
word hot	39	45	14
word house	13	-26	28
word hung	-16		-42
word if		19
word in		-61
word inside	-16	-21
word instead	45
word is		-25
word it			-18
word itself		65
word job		-27
word kit	59	57
word last		-78
word layers	25
word lead	61		73
word led	24
word length	-19	-72	-21
word level			-22
word lid	24	19
word lint	-45
word list			32
word little	-29	-68	-21
word load		22
word longer	-39	13
word loop	17		49
word luis		-17	-26
word m		76
word machine	22	-30	-58
word make	30	38
word man		-37
word mark		50
word middle		-30	-26
word mind		-43
word more		32
word mr	-17
word my		-64
word n	-13		-49
word needs	-21
word new		-27
word next		-55
word nice		-16	-80
word no		-14
word noon		14
word nos			-23
word now			-28
word number			18
word o	-17		-19
word of		37
word off		-23	-17
word oil		-36
word open	62	45
word order		-21
word other	-49		-15
word ours		-32
word out	13	-40	-21
word outta		-22
word pack			36
word pair	23
word paper			17
word patch	49	67	52
word people		-49
word piece			-15
word place			-46
word plenty		14
word press	54
word pressure			-48
word problem	-28
word put			-42
word quantity		16	-12
word quiet			-16
word r	35	-31
word rain		-32
word rains		-19
word re		-64
word real	-13		12
word rear	27	45	13
word rental		-15	-26
word replacement		20
word right	32	-15
word ring	-19		45
word rise	16		-13
word rm	12		-67
word roll		50
word room	-24
word round	-47	15	-58
word row	22	29
word run	22		-13
word runner		75
word running	-37		-14
word s	-29	-33	-40
word same	-36	-29
word sample		47
word scrap			-26
word second			35
word she		42
word sheet		-23	-20
word sir	36
word site		-29
word size	-39	-15
word slip	-43
word slow	44		-42
word small	40
word somewhere		33
word sorry		-28
word spare	-62		-64
word spin	-84	-46
word spot	-54	36	-49
word start		27
word static	33
word still		27
word stop	-15		15
word store	-27	-42
word story		21
word straight			-54
word street	45		-39
word strip	24
word strong		-20
word suite	26
word supposed		-28
word template		19
word test		20
word that		13
word the		35
word them			45
word then		-28
word there		43
word third	83	-18	-33
word those		28
word through		-14	-39
word time			-52
word to		33	13
word top	-31	26
word total	-14
word twice	43		-60
word type		21
word u		-23
word under		53	57
word unit	-44
word up	-50	15
word upper	13		58
word us		-28
word volume		14	-18
word wants		-18
word weight	-15		-24
word went	14
word whoever	-34		-13
word whole			-36
word width	-16
word wind	-35
word with		41	-16
word wrong	-39	-44	-18
word x			-59
word yet		-57
word you'd	-19
word zone	-39
`;
