/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after at defect	-37
after at part	87
after at surface	46
after at word	-23
after by defect	-39
after by fixture	-40
after by part	31
after end defect	-13
after for defect	-27
after from defect	32
after in defect	-40
after in fixture	14
after in material	64
after in part	87
after in surface	16
after on defect	-49
after on material	76
after on surface	29
after on word	-22
after quantity defect	-42
after quantity fixture	15
after quantity part	47
after quantity size	51
after quantity surface	-21
after quantity word	-41
after term area	38
after term finish	-32
after term fixture	65
after term size	16
after term surface	-37
after word area	93
after word defect	-37
after word finish	-30
after word part	15
after word surface	24
after word tells	-41
after word verbish	25
article a	-22
article the	21	20
as ruled all far	61	75	62
as ruled all far+here		29
as ruled all far+phrase		24	26
as ruled all here	43	27	25
as ruled all pair	78	39	26
as ruled all told		17	22
as ruled none far	-17	-38	-23
as ruled none here	-13
as ruled none pair		18	26
as ruled some far		13	13
as ruled some far+phrase		13
as ruled some here	38	21
as ruled some pair		35	13
as ruled some phrase		14
as ruled some told		13	-20
behind about here-after	-18
behind about here-before	51
behind at +1	-41
behind at -1	17
behind at -2	14
behind at -3	-27
behind at -4	-35
behind at here-before	46
behind behind -2	-15
behind behind -3	-13
behind behind -4	-15
behind behind here-after	25
behind behind here-before	16
behind by +1	-44
behind by -1	34
behind by -3	-73
behind by -4	47
behind by here-after	-30
behind by here-before	70
behind down here-before	22
behind end -1	18
behind end here-after	-13
behind for -1	91
behind for -3	31
behind for -4	-54
behind for here-after	-100
behind for here-before	-29
behind from +1	-23
behind from -2	-33
behind from -4	26
behind from here-after	-24
behind from here-before	52
behind in -1	21
behind in -3	-40
behind in -4	-47
behind in here-after	21
behind mark +1	-14
behind mark -1	-50
behind mark -2	79
behind mark -4	-28
behind mark here-after	-17
behind mark here-before	19
behind number +1	-22
behind number -1	38
behind number -2	-20
behind number -3	-25
behind number -4	-34
behind of +1	-17
behind off +1	-31
behind off -1	-50
behind off -3	-17
behind off -4	70
behind on +1	-30
behind on -1	20
behind on here-after	13
behind on here-before	17
behind out -1	-33
behind out -2	-32
behind out -3	45
behind out -4	-27
behind out here-before	41
behind over here-after	50
behind quantity +1	-38
behind quantity -1	17
behind quantity -2	-24
behind quantity -3	17
behind quantity -4	13
behind quantity here-before	37
behind short -1	-72
behind term here-before	31
behind through here-after	59
behind to here-before	35
behind up -1	-15
behind up -2	32
behind up -3	-38
behind up -4	-25
behind up here-before	51
behind with +1	-25
behind with -1	45
behind with -2	-14
behind with -3	-17
behind with -4	-18
behind with here-after	-39
behind with here-before	41
behind word +1	-23
behind word -2	21
behind word here-before	15
between 	23
between are	-17
between be	25
between get	26
between get a	-32
between has a	36
between have	61
between is	30
between still	60
between were	20
by far		-17	-15
by far lacks none 0	21		-19
by far lacks none 1	-18	-35	-30
by far lacks none 2	-16	-17
by far lacks points 0		13
by far lacks points 1	34		-24
by far lacks points 2	-31	-18	15
by far lacks points 3	-26	-12	31
by far+here lacks none 1			-16
by far+here lacks none 3	-18	-15
by far+here lacks points 1		15	23
by far+here lacks points 2	32		27
by far+here lacks points 3	56	15	-28
by far+phrase		13
by far+phrase lacks none 0		39	39
by far+phrase lacks none 1		12
by far+phrase lacks none 3		28
by far+phrase lacks points 0		-36	50
by far+phrase lacks points 1		22
by far+phrase lacks points 2		42	-34
by here	16
by here lacks none 1	23	44	33
by here lacks none 2	23	-15
by here lacks none 3		-18	-24
by here lacks points 1	-25
by here lacks points 2	-20	-20	-23
by here lacks points 3		-29	-41
by pair		28	23
by pair lacks none 2		35	30
by pair lacks none 3	14	25	20
by pair lacks points 2	-17	29
by pair lacks points 3		14	15
by phrase lacks none 0		-17
by phrase lacks none 2		15
by phrase lacks points 0			-18
by phrase lacks points 1			-13
by told lacks none 0			-16
by told lacks none 1		-17
by told lacks points 0			-25
by told lacks points 2		-14
by told lacks points 3			52
counted bare	20	28	16
counted count	25	48	-16
counted current			17
counted length		-14	-25
counted pressure	-32
counted time	-16	-22	19
counted voltage	33
counted volume	-34	39
counted weight	-23
does add far+phrase		47
does add here		16
does add kind material		88
does add kind part		25
does add kind word		-35
does add word		-30
does ask 		-26
does ask far		-40
does ask far+here		23
does ask far+phrase		47
does ask fixture		-16
does ask here		-37
does ask kind area		50
does ask kind defect		-16
does ask kind finish		-16
does ask kind fixture		-28
does ask kind material		-15
does ask kind part		32
does ask kind surface		-12
does ask kind verbish		-16
does ask kind word		46
does ask material		14
does ask pair		77
does ask part		22
does ask surface		-61
does ask told		-29
does ask word		31
does be defect		-38
does be finish		18	-23
does be fixture		35	29
does be material		19
does be part		16	-16
does be size		-25
does be tells		-45
does be verbish		-14
does blow 			-17
does blow far			66
does bolt far			58
does bolt far+here			-52
does bolt here			-37
does bolt kind material			-32
does bolt kind word			-37
does book far		-25
does book far+here		48
does book far+phrase		-47
does book kind word		76
does book phrase		-18
does book told		24
does box 			-23
does box far		45
does box far+here		-22	-20
does box far+phrase		-21
does box here			24
does box kind area			-24
does box kind fixture		43
does box kind material		33	72
does box kind part		36
does box kind verbish		-26
does box kind word		-23
does box pair		51
does box phrase		-15
does bring area		-34
does bring defect		-18
does bring far		-18
does bring far+here		17
does bring far+phrase		37
does bring fixture		-20
does bring here		-19
does bring kind area		-32
does bring kind defect		-22
does bring kind material		46
does bring kind size		-18
does bring kind surface		15
does bring kind tool		45
does bring kind verbish		22
does bring kind word		-25
does bring material		34
does bring pair		21
does bring phrase		27
does bring told		-14
does bring tool		28
does bring verbish		27
does bring word		-12
does buy 		-41
does call area		-14
does call far		-22
does call far+here		-40
does call far+phrase		48
does call fixture		-17
does call here		37
does call kind fixture		-20
does call kind material		30
does call kind part		32
does call kind word		52
does call material		27
does call pair		101
does call phrase		20
does call told		-22
does call verbish		-19
does call word		46
does cap far+here			61
does cap here			-18
does caulk here			32
does change 		-23	28
does change defect			-17
does change far		31	-29
does change far+here		76	18
does change far+phrase		13	31
does change here			-25
does change kind area			29
does change kind defect		-34
does change kind material			60
does change kind part		73	14
does change kind surface		-12
does change kind verbish		47
does change kind word			-22
does change pair		-29
does change phrase			-33
does change told		-15	56
does change word			-29
does check 		36
does check far		-45	-27
does check far+here		16
does check here			53
does check kind defect		-24
does check kind material		-12
does check kind part		-17
does check kind word		56
does check told		30
does check word		-14
does clean 			17
does clean far		15	-24
does clean far+here			80
does clean here			-31
does clean kind area			-21
does clean kind defect			-19
does clean kind part			47
does clean kind word		63	45
does clean material			-39
does clean pair			18
does clean part			46
does clean told			18
does clean word			15
does clear far			37
does close far		-25	-30
does close far+here		35
does close far+phrase		43
does close here		19
does close kind defect		-19
does close kind fixture			-13
does close kind part		-41
does close kind surface		20
does close kind verbish		39
does close kind word		-62
does close material		-30
does close surface		50
does come area		52
does come defect		-17
does come far		-18	-13
does come far+here		-21	-22
does come here		19	-22
does come kind area		-16
does come kind defect		-13
does come kind fixture		-24
does come kind material		20	-16
does come kind part			-20
does come kind size		-18
does come kind surface		-15
does come kind tells		-34
does come kind tool		-23
does come pair		-38	-16
does come part		-42
does come verbish		45
does come word		39
does complete far+here			-18
does complete here			-25
does complete kind material			-70
does cover here		13
does cut 		-29	-23
does cut area			-15
does cut defect		80
does cut far		25	-12
does cut far+here		26
does cut far+phrase		45
does cut fixture			-34
does cut kind area		-50
does cut kind defect		93
does cut kind material		39
does cut kind part		-52
does cut kind size		38	-14
does cut kind surface		32	13
does cut kind tool			44
does cut kind verbish		31	17
does cut kind word		-31	16
does cut pair			76
does cut part		-37
does cut phrase		-17
does cut surface		62	18
does cut told		-13	-27
does cut verbish		43
does cut word		-50	15
does dig 		-33
does dig far		37	13
does dig far+here			-56
does dig here			45
does dig kind surface			16
does dig kind word			-27
does dig told		-15
does do 		36	-12
does do defect		-19
does do far		-31	-16
does do far+here		45
does do far+phrase			-15
does do fixture		-32
does do here		-50	37
does do kind area		-23	22
does do kind fixture			18
does do kind part		35	22
does do kind surface		-17	21
does do kind verbish		-20	-12
does do kind word		-47	-24
does do material		16
does do pair		-25	20
does do part		36
does do phrase		-25
does do told		45
does do verbish		-26
does do word		-32
does drill far			-20
does drill far+here		31	-21
does drill here			27
does drill kind material		39
does drill kind part			-35
does drill kind surface			25
does drill material			21
does drill surface			13
does drop 		-30
does drop far		76
does drop far+here		37
does drop kind material		23
does drop told		-21
does dry 		-19	-14
does dry far		16
does dry far+here		-37	66
does dry far+phrase			-46
does dry here		-37	-20
does dry kind area		42
does dry kind defect		-16
does dry kind fixture		58	16
does dry kind material		-52
does dry kind part		-13	-20
does dry kind surface		-25	-45
does dry kind verbish		16	-41
does dry kind word		-35
does dry pair			-55
does dry phrase		-12
does dry told		-13
does file far		-24
does fill 			-15
does fill defect			21
does fill far			-15
does fill far+here			118
does fill here		21	-27
does fill kind defect		52	22
does fill kind fixture		-46
does fill kind material		-23	38
does fill kind surface		71
does fill kind verbish		20
does fill kind word			38
does fill material			30
does fill pair			-17
does fill surface		53
does find far+here		21
does find far+phrase		-17
does find here		13
does find kind material		56
does find kind word		-20
does find phrase		-29
does find told		22
does find word		23
does finish 		36
does finish area			-33
does finish far		-20
does finish far+here		21
does finish far+phrase		-31
does finish here		55	-40
does finish kind area			-14
does finish kind fixture		-23	-16
does finish kind material			-20
does finish kind part		-17	-43
does finish kind size			37
does finish kind surface		49
does finish kind word		16
does finish material			-26
does finish phrase		19
does finish told		31	-13
does finish word			39
does fit far		64
does fit far+here			-31
does fit here			41
does fit kind part			28
does fit kind verbish			23
does fit kind word			31
does fix far		68
does fix far+here			27
does fix far+phrase		-36
does fix here		14
does fix kind defect			18
does fix kind material			-12
does fix kind part		15
does fix kind surface			39
does fix kind verbish		83
does fix kind word		-20	41
does fix pair			47
does fix phrase			-17
does fix told		-18	13
does frame here			21
does fre far+here			18
does fre here			19
does fre kind fixture			14
does fre word			-18
does get defect		50	33
does get far		-32
does get far+phrase		-23
does get finish		-22	19
does get fixture		26	-51
does get here		-12
does get kind area		-38
does get kind defect		31
does get kind surface		-15
does get kind word		-53
does get material			-24
does get pair		-13
does get part		15	30
does get phrase		-20
does get surface		23	35
does get tool			-28
does get verbish		-37	-30
does get word		-61	-21
does give far		-20	-26
does give far+here			-79
does give far+phrase			37
does give here			25
does give told		12
does glue far			35
does glue far+here			19
does glue far+phrase		12
does glue kind defect		-18
does glue kind fixture			37
does glue kind material		34	21
does glue kind part			14
does glue kind verbish			65
does glue kind word		-16	-25
does glue material			16
does glue pair			18
does glue word		18	-67
does go 		-18
does go defect		30
does go far		-27
does go far+here		-24	-13
does go fixture		20
does go here		-25	-33
does go kind area		-26	-21
does go kind fixture		-29
does go kind material		-19
does go kind part		25	-19
does go kind size		42
does go kind surface		-38
does go kind tool		-16
does go kind verbish		-37	-35
does go kind word			-19
does go material			21
does go pair		-30	-36
does go part		32
does go surface			12
does go told		-12
does go tool		34
does go verbish		-16
does go word		-16
does grind 			13
does grout 		54
does grout far		-35
does grout far+here			18
does grout here			16
does grout told		48
does hang 		41
does hang area			26
does hang defect		-27
does hang far		-18
does hang far+here		-21	-16
does hang far+phrase		24	56
does hang fixture			13
does hang here		32	51
does hang kind area			40
does hang kind defect		-36
does hang kind fixture		80	75
does hang kind material		-51	22
does hang kind part		35
does hang kind surface		26
does hang kind word		-21	-25
does hang material		18	24
does hang part		30
does hang phrase		17
does hang told			-20
does hang word		14	-47
does have area		-39	-19
does have fixture		-22
does have material		23	25
does have part		67
does have surface		-32	34
does have verbish		19
does have word			14
does hold 			19
does hold far			-28
does hold far+here			-27
does hold far+phrase			-39
does hold kind material			-25
does hold kind part			-26
does hold kind word			-27
does hold phrase			-14
does hold told			32
does hold word			-25
does hook 		30
does install 			-18
does install far		-23
does install far+here			-16
does install here		21	31
does install kind finish			-20
does install kind fixture		-24	40
does install kind part		33	44
does install kind size		-38
does install kind surface		27	-22
does install kind tool		-22
does install kind verbish		22	-18
does install kind word		24
does install pair		54	36
does install told			-18
does keep 		32
does keep far		-20
does keep far+here		-30
does keep here		13
does keep kind material		-47
does keep phrase		26
does keep told		16
does land far		-29
does land here		21
does lay 		-28	-19
does lay far		18	43
does lay here			31
does lay kind material			48
does lay kind word		30
does lay phrase			-12
does leave defect		23
does leave far		-43	-30
does leave far+here		-35	-31
does leave far+phrase		-15
does leave here		-16
does leave kind area		-15
does leave kind fixture		13
does leave kind material		-31
does leave kind part		-40
does leave kind surface		-23
does leave kind tool		-19
does leave kind verbish		21
does leave kind word		-28
does leave material		49
does leave pair		66
does leave surface		-54
does leave told		-17
does leave verbish		55
does leave word		-45
does let material		17
does let surface		-71
does level 			16
does level far			-17
does level far+here			34
does level here			-33
does level kind area			20
does level kind material			-77
does level kind part			-15
does level pair			-82
does like word		21
does look defect		-34
does look far		41
does look far+here		32
does look here		16
does look kind area		31
does look kind defect		-49
does look kind material		78
does look kind part		44
does look kind surface		-16
does look kind word		17
does look material		-15
does look pair		20
does look part		57
does look word		-33
does make 			-12
does make far		-48	-36
does make far+here		28	33
does make here		-40
does make kind area		-35
does make kind defect		-21
does make kind fixture		74
does make kind material			-37
does make kind word			47
does make material		40	-30
does make pair		37	-22
does make word		16	77
does measure 		-14	-21
does measure far		18
does measure here			-30
does measure phrase			-15
does miss 		-13
does miss far+here		29
does miss far+phrase		-20
does miss here		-21
does miss kind defect		-35
does miss kind material		36
does miss kind surface		-14
does miss pair		-46
does mount here			42
does mount kind part			15
does move 		-19
does move area		39
does move defect		-13
does move far+here		-25
does move far+phrase		-41	24
does move fixture		14
does move here		49
does move kind fixture		-23	-34
does move kind material		-20
does move kind part		21	42
does move kind surface			40
does move kind word		50
does move material		-25
does move pair		52	33
does move part		19
does move surface		-36
does move told		-17
does move word		19
does nail far			-12
does nail far+here			-14
does nail here			13
does nail kind material			-31
does nail kind surface			-28
does need area		-59
does need defect		27
does need fixture		37
does need material		61
does need size		-20
does need surface		-16
does need verbish		-55
does need word		-30
does oil far			-23
does open 		-23	-17
does open far		15	56
does open far+phrase		-46	-28
does open here			-18
does open kind area			60
does open kind fixture		45
does open kind material			-50
does open kind part			32
does open kind surface		42
does open kind verbish		-31
does open kind word		-33	-60
does open material			-53
does open phrase		-16	-24
does open surface		31
does open word			-62
does order 		-20
does order far		-21
does order far+phrase		16
does order here		20
does order kind area		-12
does order kind fixture		18
does order kind material		24
does order kind surface		-19
does order kind verbish		40
does order pair		36
does order part		31
does order told		-16
does order word		-22
does owe far		-15
does owe far+phrase		16
does owe here		15
does owe kind material		15
does owe surface		16
does pack far			-34
does pack far+here			17
does pack here			53
does pack kind material			24
does pack kind word			33
does pack material			27
does paint 		39
does paint far			-40
does paint here		13	39
does paint kind material		-40
does paint kind surface		107
does paint kind verbish		-29	20
does paint kind word		-20	21
does paint material		-52
does paint pair			34
does paint told		36
does paint word		-17
does pass far			-14
does pass far+here			48
does pass kind material			-15
does pass kind word			42
does patch 		-38
does patch far		61
does patch here		14	14
does patch kind defect		-12
does patch kind material		50	16
does patch kind part		-104
does patch kind surface			20
does patch kind verbish		-42
does patch kind word		29
does patch phrase		-15
does patch told		-24
does pick 		16
does pick kind fixture		14
does pick kind material		13
does pick kind part		32
does pick kind surface		-15
does pick kind word		13
does pick pair		47
does pick phrase		28
does pick told		-13
does pick word		-51
does plane 		-13
does plane far		15
does plane far+here		26
does plane here		-22
does plane kind fixture		84
does plane kind material		63
does plane kind surface		-28
does plane kind word		-57
does plug far			42
does plug kind word			-26
does pour 			-25
does pour far		28
does pour far+here			-15
does pour here			22
does pour kind material		121
does pour kind word			34
does prime 		36	-25
does prime far			-27
does prime far+here			-36
does prime here			62
does prime kind word			27
does pull defect			-28
does pull far		-46	-34
does pull far+here		-27
does pull far+phrase		32
does pull fixture			14
does pull here		29	73
does pull kind defect		-16
does pull kind fixture		16
does pull kind material		-17
does pull kind verbish			14
does pull material		38	16
does pull pair		77
does pull phrase		32
does pull told		-25	-30
does pull word			-14
does put 		18
does put area		-65
does put defect		12
does put far			-20
does put far+here			20
does put far+phrase		-42	32
does put fixture		23
does put here			-34
does put kind defect		-54
does put kind finish		-19
does put kind fixture		66
does put kind material		-31	29
does put kind part		-25
does put kind surface		33	-43
does put kind tells		-24	28
does put kind tool			-13
does put kind word		20
does put material		-35
does put pair			31
does put part			-20
does put phrase		-16	-17
does put surface		44	-16
does put tells			-21
does put told		34	15
does put verbish		-26	-27
does put word		-30	41
does redo 		-13
does redo far		25
does redo far+here		30
does redo here		18
does redo kind material		49
does redo kind part		89
does redo kind surface		-69
does replace 			27
does replace far		14	-16
does replace far+here		-15	74
does replace kind defect			14
does replace kind finish			22
does replace kind fixture		-27	-22
does replace kind part		41
does replace kind surface		-13	42
does replace kind tells			-24
does replace kind verbish			21
does replace kind word			44
does replace kind work		-20
does replace pair			12
does replace told			30
does reset 			-25
does reset far			30
does reset far+here			47
does reset here			14
does reset kind material			51
does reset kind part			77
does reset told			-18
does return 		28
does return far+here		-25
does return kind word		57
does return phrase		23
does rip 		14
does rip far		19
does rip far+here		-26
does rip here		20	17
does rip kind material		-35
does rip material		-43
does rip phrase		38
does rip told		-19
does roll 			-21
does roll far		-21
does roll far+here		-15	-14
does roll here		31	34
does roll kind material			52
does roll kind word			14
does run 			24
does run area			-30
does run defect			-46
does run far		-46
does run far+here		-19	-15
does run far+phrase		89	-41
does run fixture			50
does run kind area		-19	-28
does run kind defect		19	-30
does run kind fixture		49	33
does run kind part		-13
does run kind size			-13
does run kind surface		58
does run kind tool			38
does run kind verbish		-28	-46
does run kind word		-22	-27
does run material		-12
does run phrase			-21
does run told		-17	63
does run verbish			-49
does run word			-21
does sand 		-24
does sand area		-19
does sand defect		22
does sand far		80	31
does sand far+here		30
does sand far+phrase		-21
does sand fixture		58
does sand here			13
does sand kind area		-12	42
does sand kind defect		22
does sand kind fixture		66
does sand kind part		67
does sand kind surface			23
does sand kind word		-13
does sand pair			56
does sand phrase		-29
does sand surface		-20
does say defect		-12
does say material		-27
does say part		25
does say surface		-27
does say verbish		-52
does say word		20
does scrape 		42
does scrape far		-29	65
does scrape far+here			-33
does scrape here			64
does scrape kind area			16
does scrape kind material			40
does scrape kind word		-37	24
does scrape material			39
does screw far+here			13
does screw far+phrase			-27
does screw here			-40
does screw kind area			-16
does screw kind defect			-26
does screw kind fixture			-59
does screw kind part			-58
does screw kind surface			22
does screw pair			-48
does scribe 			-16
does scribe far			15
does scribe far+here		24	-20
does scribe here		39	51
does scribe kind fixture			31
does scribe kind material		26	77
does scribe kind surface		18	-14
does scribe material			76
does scribe surface			-16
does scribe told			-19
does seal far		14
does seal far+here			-15
does seal far+phrase			-17
does seal here			54
does seal kind area			17
does seal kind material			-31
does seal kind part			43
does seal kind surface			43
does seal kind word		-52	-22
does seal material			-16
does seal surface			39
does seal told			20
does seal word			-34
does see defect		-48
does see far		-27
does see far+here		35
does see here		-16
does see kind area		-41
does see kind fixture		-27
does see kind material		-19
does see kind surface		14
does see kind verbish		-19
does see kind word		-50
does see material		-43
does see pair		-51
does see part		41
does see surface		26
does send far		54
does send far+here		-19
does send far+phrase		81
does send kind defect		15
does send kind fixture		50
does send kind part		73
does send kind size		-13
does send kind surface		14
does send kind verbish		-33
does send kind word		48
does send pair		38
does send word		59
does set 		-33
does set far		-34	-30
does set far+phrase		65	38
does set here		13	80
does set kind area			14
does set kind fixture		33
does set kind material		52
does set kind part			43
does set kind surface		-14
does set kind word		-23	44
does set material			-35
does set phrase		-23
does set surface		27
does set told		-14	-26
does set word		15	31
does shim defect			-35
does shim far		-19	-21
does shim far+phrase			43
does shim kind defect			-40
does shim kind fixture			30
does shim kind material		27	32
does shim kind part			18
does show far		-17
does show far+here		-23
does show kind verbish		-16
does show kind word		-25
does show pair		-15
does show phrase		20
does shut 			23
does shut far			43
does shut far+phrase			19
does shut kind part			97
does sister 			40
does sister far			73
does sister kind material			35
does sit far		-26
does sit far+here		-37
does sit kind area		-17
does sit kind surface		20
does sit kind word		-21
does sit material		-34
does sit pair		13
does sit surface		73
does skim 		20
does skim far		39
does skim kind material		16
does skim kind word		-18
does snug 			-14
does snug far			33
does snug kind material			59
does snug material			54
does spray 			-17
does spray far			18
does spray far+here			47
does spray here			-37
does spray kind area			-26
does start 		-25
does start far		18
does start far+here		-20
does start far+phrase		30
does start here		27
does start kind area		67
does start kind fixture		107
does start kind material		-14
does start kind part		-14
does start kind verbish		-20
does start kind word		-47
does start surface		39
does start told		-16
does start word		-22
does stick 			-20
does stick far		-22
does stick far+here		-47	-48
does stick here		12	22
does stick kind word		-33	-34
does stop kind verbish		-25
does stop kind word		-16
does strip 			62
does strip far+here			-46
does strip here			-25
does strip kind material		15	23
does strip kind word		-19
does strip phrase			-18
does swap 		-24	15
does swap area		-23	-21
does swap defect			-13
does swap far		20
does swap far+here		65	-32
does swap far+phrase			-39
does swap fixture		-15
does swap here		-18	44
does swap kind area		-35
does swap kind fixture		-20	-62
does swap kind material		24	47
does swap kind part		82	21
does swap kind surface		19	-17
does swap kind verbish			13
does swap material		22	42
does swap pair		48	52
does swap part		81
does swap phrase			-16
does swap surface		-18	-16
does swap told		-24	38
does swap verbish			32
does swap word		-14
does swing far		-13
does take 		-17
does take defect		-65
does take far			-21
does take far+here		36
does take far+phrase		35	14
does take fixture		-19
does take here			-21
does take kind area		15
does take kind defect		-30
does take kind fixture		53	-25
does take kind material		17	-20
does take kind size		-27
does take kind surface			-52
does take kind tells		23
does take kind tool		84
does take kind verbish		-34
does take kind word			-24
does take material		-29
does take pair			-39
does take part			24
does take phrase		-36
does take surface			-13
does take word		106
does tape defect			-23
does tape far		28
does tape far+here			-27
does tape here			18
does tape kind part			-43
does tape kind word			58
does tape part			-42
does tape word			73
does tell area		63
does tell far		-25
does tell far+here		-28
does tell far+phrase		-37
does tell here		33
does tell kind fixture		34
does tell kind material		-31
does tell kind part		-31
does tell kind surface		-25
does tell kind verbish		70
does tell kind word		-51
does tell material		-14
does tell pair		15
does tell part		-40
does tell phrase		39
does tell surface		-37
does tell told		-36
does tell verbish		50
does test 			39
does test far+here		56
does test far+phrase			-42
does test here			57
does test kind material		57
does test kind part			-28
does test kind word		-32	41
does test pair			15
does test phrase			-16
does test told			59
does tie far			73
does tie kind word			-38
does tighten 			-15
does tighten far			19
does tighten here			17
does tighten kind part			52
does tighten kind word			20
does tighten told			-15
does top 		-13
does top far+here		-15
does top here			-14
does top kind area			21
does top kind material		-17
does top kind surface		52
does top kind verbish		-32
does top pair			-38
does top told		-14
does touch far		-13
does touch far+here		-18
does touch far+phrase		20
does touch here		17
does touch kind fixture		42
does touch kind part		-15
does touch kind surface		30
does touch kind word		16
does trim here			20
does trim told		-41
does turn 		16	-13
does turn far		-56
does turn kind material			37
does turn kind part			26
does turn told		33	-17
does use 			-27
does use far			-15
does use here			-26
does use kind material			-39
does use phrase			-13
does walk 		-29
does walk kind material		-41
does walk kind surface		-27
does walk told		-15
does want area		-34
does want defect		-31
does want material		28
does want part		-31
does want verbish		-31
does want word		-17
does work far			-13
does work far+here			-13
does work kind word			-22
does wrap far+here			16
does wrap kind word			30
ends DET		25	-22
ends NEG		-40
ends Nclock		-33
ends Nidiom			88
ends Nlabel	-16	48
ends OPR		53
ends PREP	-28	-21
ends PRON			-25
ends Q0	-17		-20
ends Qlength		-36	-39
ends Qother			22
ends Qpack			18
ends Qtime			-46
ends SUB		-24
ends Vmeasurei	-27		-34
ends Vmoveb	25	-13	23
ends Vneedb		-22
ends Vneeds	-14	-17
ends Votherb		-26
ends Vreturnb		15
ends Vsayb	-70	-24
ends Vseeb	-13	16
ends Vworkb		23
ends Vworkbp	23
ends Vworkbpp	20		62
ends Vworki		25	19
ends Vworks	26	-24	-15
ends plain		15
ends tarea's	25	-39	-18
ends tdefect	-19	-12	-13
ends tdefect's		37	18
ends tdefectVotherb	-27	33
ends tdefectVotheri	-13	-25	-14
ends tdefectVotherp		-25	-16
ends tdefectVotherpp	-14	-17
ends tdefectVothers	-16
ends tdefectVworkbpp			43
ends tdefectVworkp		-12
ends tdefectVworkpp		-17	-21
ends tfinish		-16	-15
ends tfinishVworkb	-34	-20
ends tfinishVworkpp		-23	31
ends tfixture	19	16	18
ends tfixture's	72
ends tfixtureVworkb	-13	27	21
ends tfixtureVworks		29	20
ends tmaterial's	57
ends tmaterialVotherb	19	26
ends tmaterialVworki	55	52	16
ends tmaterialVworks			-16
ends tpart	14	22	12
ends tpart's		24
ends tpartVotherb	17	-14	-25
ends tpartVothers		-31	13
ends tpartVworkb		15
ends tpartVworks	59	31	13
ends trole		31	85
ends tsurface		15
ends tsurface's	50	-12	-29
ends tsurfaceVotherb		-25
ends tsurfaceVothers		-40
ends tsurfaceVworkb	-17
ends tsurfaceVworki	22		17
ends tsurfaceVworks	23		12
ends ttool's	29
ends ttoolVworkb	-24		-33
ends ttoolVworks	-49	-16
ends twork	-15	-21
ends verb	-13
ends w	-13
ends wed	-53	-22
ends wing	-20	-13
ends wly		-45
far after 0			18
far after 1	26	23	22
far after 13+	-21	-20
far after 5-7	-23		-13
far after 8-12	-15	-13	-25
far before 0	26	32
far before 1		-26
far before 2	20	29
far before 3-4		14	16
figure-between	23
flawed			22
frame copula +1	-17
frame copula -1		27	-17
frame copula -3		-13	-15
frame copula -4		-27
frame copula area		42
frame copula defect		-40
frame copula finish		-23	-26
frame copula fixture			37
frame copula here-before	29		16
frame copula material		27
frame copula part		14
frame copula surface			-12
frame copula tells		-17
frame copula tool		-24
frame copula verbish		-18
frame copula word		-20
frame copula work		14	-14
frame imperative +1	17		-28
frame imperative -1	12	25	31
frame imperative -2	-15		-33
frame imperative -3	-21	-13
frame imperative -4	-18		21
frame imperative area		-21	25
frame imperative defect			-22
frame imperative fixture		12
frame imperative here-after	56
frame imperative here-before		-58
frame imperative material			14
frame imperative part		32	22
frame imperative size		40
frame imperative surface			-22
frame imperative tells		-42
frame imperative tool		-42
frame imperative verbish			49
frame imperative word		-19	-39
frame modal +1	15	-13
frame modal -2			-23
frame modal -3	57	-16
frame modal -4	-22
frame modal defect		-21
frame modal finish		-33
frame modal here-after	-33	20	34
frame modal here-before	-13	58
frame modal material		13
frame modal part		57
frame modal size		-49
frame modal surface		21
frame modal tells		17
frame modal tool		17
frame modal verbish		-12
frame modal word		-17
frame modal work		-49
frame none +1	-33		-19
frame none -1	29	39
frame none -4		-28	-17
frame none area			13
frame none defect			-23
frame none finish			22
frame none fixture		29	-19
frame none here-after		15	13
frame none here-before	16		-34
frame none material		15	13
frame none part			14
frame none size			-25
frame none surface			-27
frame none tells		23	-20
frame none tool		13	-23
frame none verbish		-15
frame none work		22	28
frame owed +1	54	-37
frame owed -1	-19
frame owed -2	-35	32
frame owed -3	-50	40
frame owed -4	-22	-22
frame owed area		32
frame owed defect		-19
frame owed here-after	51	43
frame owed here-before		14
frame owed material		18
frame owed size		-17
frame owed surface		38
frame owed tool		-12
frame owed work		-28
frame past +1			-16
frame past -1		18	31
frame past -2		-34
frame past -3		57
frame past -4	-13	24	-29
frame past area		-27
frame past defect		-13	-13
frame past finish		-42
frame past fixture		47
frame past here-after	21
frame past here-before			33
frame past part		18	20
frame past size			18
frame past surface		49
frame past tells		-50
frame past tool		-22
frame past verbish		-29	-12
frame past word		35
frame present +1	-26	-22	-20
frame present -1	19		-12
frame present -2	19	24	-15
frame present -4	29	-17	48
frame present area		-30	31
frame present defect		24
frame present finish		-26	-16
frame present fixture		34
frame present here-after	-48
frame present here-before	26	33	-16
frame present material			15
frame present part		15
frame present size		31	24
frame present tells		-14	30
frame present tool		-13	-17
frame present verbish		16	-32
frame present word		-19	-31
head 2 x	-18		-35
head air	-39	-12	-32
head altogether	-17
head anybody		-18
head anyhow	-30
head anything		-33
head arvo		-25
head attic	-13
head b	-26
head back bedroom	48
head back door	-35		-42
head backsplash		14
head bad	-25	-50	27
head bag	-24	-40
head balusters	70	45	25
head bar		-34	22
head base	-18	-18
head baseboard		27
head basement	24		-54
head bath		23	46
head bathroom		34	26
head battery	-31
head bay	44	-45
head bed	-23
head bedroom			23
head bedroom 2	-38
head bench		20	19
head better		-63
head bifold	20
head big	-54	-20
head bit	-36	-58
head black		24
head blade	40
head bled	-66	-15
head blinds	108		61
head blue tape	-22
head board	37	70
head boards	94		63
head bolt	13
head bolts			23
head bonding primer		-41
head bottom	-19	14	-13
head bowl	39
head box		-21
head boxes	30	-13
head boy		-16
head br	-45
head bracket	12	-29	59
head brackets	35		32
head breaker	-27	48	29
head broke	36
head broken	-14		-40
head bucket	-51	-53
head bulb	-19
head c		-17	-35
head cabinet	39		22
head cabinets		101	-14
head cable	39	-58	49
head camera	-28
head cap	-36
head carpet	-46	-18
head carpet's			-23
head case	15		-15
head casing		53
head caulk	-23		20
head ceiling	69	25
head center	-22		-14
head chain	17		-40
head chase		35
head chimney	-21
head chip	-16
head chunk	-14
head circuit	12		76
head clamps	-49
head clear	-34	-20
head cleats		-30
head closer			43
head closet	47	14	23
head closet rod	19
head coat	-15	50	-14
head code	-23
head cold	-35	22
head color	-21	92
head concrete	39	21
head cord	-37		39
head corner	-88	-54	-46
head corners		56
head corridor	-19	-31
head counter	14	25
head cover		63	-54
head crack	-33	100
head cracked	-13	-14	-47
head crooked		13
head crown	19	26
head crown's		33	-19
head curb		37
head cut	45	13	59
head cut out	-54	-24
head damper	-60
head dave		-45
head daylight	13
head dead		-15
head deck	-40	-41	15
head den	12	14
head desk	-34
head dimmer	20	36
head ding		-17
head dining room	-22		-17
head dishwasher	31	-58	-14
head disp	18
head door		-12
head door's		-56
head doors	67	75
head downspout	16	-27
head draft	-60
head drain	101	41	49
head drawer	-21	-84
head drawer front	112	44
head drawing	20	-37
head drip	-32	14
head drip edge	46
head drips	-15
head drop		73
head drops	29		-34
head dry	24	-35	-58
head dryer		-40
head dryer vent	40
head drywall	107	48	-30
head duct	-22		60
head dumpster		-12
head earliest		37
head edge	-61	19	34
head eggshell		-22
head elbow	-21	34
head elbows		-15
head electrical		22
head else		-33
head end		-37
head end panel		-37
head ends		-14
head entry		53
head epoxy		35
head everywhere		-46
head except	-18	-64
head extension		-16
head extra			-31
head face		-18
head factory		-19
head fall	-21	-21
head falls	75
head fan	38		35
head faucet	-80	-27	13
head fault	-24
head fell	29
head fella		14
head filler		-13	62
head filters	-22		32
head finish		-43
head fireplace	57	-36
head first			57
head first coat	-34	46	25
head flange	42	55
head flashing	-75	28
head flat	-30	15	-24
head flex	-34	-29	105
head float	63
head floor	39	-20
head floor's	116	31
head foam	-44	-54
head fourth	-28
head frame	-36
head framing	-38
head free	-23		22
head fridge	-42		-22
head front	-27	37	68
head front door	25		-24
head full		23
head furnace	-23		-31
head furniture		59
head gap		-26
head gaps		-41
head garage	-43		-18
head gary	-53	-20	-20
head gas	-38	64	-23
head gasket	-18		-50
head gate	75	103
head gfci	-12
head glass	37	41	-47
head glue	-25	23	-30
head go	-28
head god	-47
head goes	-14	41
head gone	-13		14
head gray		-28
head grease	-32
head grout	38		-64
head guest room	68
head hair	-19	-20	-13
head hairline	-26
head hall			-35
head hall bath			31
head hallway	55	147
head hand	-17	-54
head handle	-49	-27
head handrail	-50	83	-18
head hanging	28	32
head hard	19	12
head hatch	72	-13	-19
head head	80	-14	20
head header		33
head heat	-15	-52
head heater	83	17
head height			29
head hinge	-73	-22	31
head hinges		69	-12
head holding	-23
head hole	-34	29	35
head holes	-39	-27	83
head hollow	14	-19
head home		-50
head hood	-37	15
head hose	76	-14	50
head hose bib	-35	-59
head hot	46	44	15
head hot side	-46
head house	-16	-25	-19
head humidity		-26
head hung	-15	16	-41
head inside	-28	-18
head inspection		-37
head instead	49
head insulation	-17		33
head island	52	55
head itself		46
head jack		26
head jamb	-16		-16
head job	-30	-27
head joint	-24	23
head joints		-44
head joist	-35	45
head joists	66	-50
head key		-14
head keys		19
head kit	58	56
head kitchen	33		-17
head kitchen faucet	-46		-36
head knobs	57
head ladder	48	-20
head lags	61		-17
head lamp	15
head landing	80	65	34
head latch	21
head laundry	76	72	53
head lav	30
head layers	27
head lead			59
head leak	-40
head leaking		-12	-22
head ledger			15
head leg	-59	-69	-33
head legs			-39
head length	-17
head let go			-27
head level		-28	-16
head lid	28	13	-22
head light	-53	-33	-39
head light's	41	40
head lights		103
head line	34		57
head linen closet			24
head lint	-44
head list			32
head living room		-15	-16
head load	-15
head lock		-29	-14
head longer		17
head look		-15
head loop	19
head loose		27	-25
head machine		-21
head main	100
head make		25
head marble		16
head marco		-32
head mastic		-12
head me		-19
head mesh	-37		-53
head meter	-39	19
head middle	-40	-29	-54
head mind		-35
head mirror	22
head missing	-14	-31
head miter	41	50
head mortar	-14	-51	-50
head mud	-48	-52	24
head nail	65	-34	27
head nail plates		-15
head nails	-19
head needs	-25	-13
head neutral	37
head newel	50
head nice			-80
head niche	36	12
head noon		32
head nos			-20
head nosing		15
head number	-46	-21	-33
head nursery			34
head nut	55		34
head o	-19		-18
head oak		21	73
head office	33		-19
head open	69	68
head opened up	-13
head opening	-44	-36	-20
head ours		-18
head out of line	22
head out of plumb		13
head outlet	48	21	46
head outlets	-20	37	-16
head outside	-33	24
head oven	29
head overhang		41
head pad		-48
head paint	-43	44	-19
head pair	20
head pan	22	-31	-13
head panel		59	13
head panels	18	51	53
head pantry		21	-15
head paper	-26
head patch	47	69
head peel		-33
head people		-40
head piece		16
head pipe	81	-14	-31
head pipes	19
head place			-46
head plank		26
head plaster	-33	81
head plastic	-25		-18
head plate	20		-32
head plates	45	43	25
head plenty		12
head plinth		-40
head plug	-20	38	49
head plugs		-34
head ply	-15	-17
head plywood		90
head poly		-93
head porch			-26
head post	-59	14
head posts	-15	43
head powder room	-17		-12
head pressure		-16	29
head primed		-22	33
head primer	28	-85	-25
head proud		-20
head pull	-21	-42
head pulls	15	26	16
head pump	62	16	-14
head punch	-26
head punky		-38
head putty		-14
head quiet			-19
head rack	-68	-55
head radiator	-15	20
head rail	32		36
head rain		-33
head rains		-18
head range	14	-28	-37
head real		22
head rear	48
head red		-19
head reducer	-17	52
head register		-58
head relief valve	-59
head rental		12
head reveal	-18		-28
head rigid		26
head ring	-66		39
head rise			-13
head riser		14
head rm	51		-15
head rock		-39	15
head rocks	-22	-31
head rod	-32		-14
head rollers	-35
head roof		72
head room	-38	-13
head round	-23	-22	-40
head row		46
head run	23
head runs			13
head rust	-38
head rusted through	-20
head s	-31
head sagging	-12
head salon	-86
head same		-82
head sample		49
head sand	-14	47	-28
head sash	-22
head saw	-21
head sconces		-17
head screen	22	51	28
head screw	-30	-18	12
head screwdriver	-15	-18
head screws	-46	-20	-68
head scuff	-12
head sealer		-56
head seam	41	72	31
head second coat	-23	-43
head sheathing	107		-19
head sheet		-27	-30
head shelf		42	14
head shelves			12
head shims	-21	25
head shoe		-13
head shop	-26	-67	-36
head shot	-16	18	-34
head shower		52	78
head side	-78	-52	-23
head sides	21	-38
head siding	20
head silicone			-26
head sill	-32	-23
head sink	-49	-25	-21
head size	-36	-14
head skirting	85
head slab	23		-18
head sleeve		19
head slider	-38	-29
head slides	-25
head slip	-44
head slope	31		18
head slow	77		-51
head smoke	-16
head socket	-43
head soffit	-67	40	-16
head soft		82
head sorry		-28
head spins	36
head splash		30
head splice	38
head split			43
head spot	-52		-40
head spout	-13
head spring	-17	30
head stack		-25
head stain	-78		38
head stairs	88
head stairwell	15
head stat	-21
head static	38
head step		46
head steps	78	-14
head stile		-43
head stone	-19
head stop	-13
head store	-31	14
head story		24
head stove		-14	18
head straight			-34
head street	60
head strike		23	30
head strip	22
head stripped	-21		-27
head stud	40	27	-41
head studs	-31	21	-14
head subfloor	65
head supposed		-27
head sweep			15
head switch	18	48
head tacky	-12	-27
head tag		15
head tap	-38	-21
head tape		12	21
head temp			-24
head template		15
head the wrong		-19
head thermostat	-83	-35
head thinset		-42
head threshold	82	17
head tile	24
head tiles	90		23
head toe kick		70
head toilet	101	37	59
head toilet seat			22
head too high	-15
head too long	-18	-36
head too short		-24	-55
head top	-28	14
head torn		-16
head track	-14	-37
head transition		-13
head trap	-37		41
head tray		22
head tread		20
head treads	47		25
head trim	-29	54	-13
head truck	-28	-34
head tub	-36	-50	27
head twice	44		-57
head union		-53
head unit	-22	-13
head uppers	-56	-39	26
head upstairs	35		-12
head us		-18
head valve		-53	29
head van	-14	20
head vanity	-18	16	-32
head vanity top		-29
head vent		42	-38
head vinyl		-12
head wall		-17	-27
head wall bend	-17		-25
head wall's	-30	-36
head walls		-38	-36
head want		-31
head washer	-17	96
head washers		-29
head water	-63	-88	-37
head water's	-102
head wax ring	-25	-33	-68
head weatherstrip	56		37
head weeping	-13		-14
head weight			22
head went	13
head wet	-13	23
head white	-20	-66	-23
head whoever	-33		-13
head width	-15
head window	65	19
head wire		71
head won't close	-14
head wood	-60	-34
head wrong	-20	-42
head you'd	-20
heading	17
heading +1		23	-22
heading -1	-21	-40
heading -2	22
heading -3	63
heading -4	33		-32
heading here-after	-36
heading here-before	12
join +1	-19	-14	-18
join +1 area	-35	17	-12
join +1 defect	-23	-17	-18
join +1 finish	-13
join +1 fixture		-19
join +1 material	-16	-19	-24
join +1 part		-23	-21
join +1 size		-17	-21
join +1 surface	-22		-17
join +1 tells	-27		-15
join +1 tool	-18	-31
join +1 verbish	-14	-40	-16
join -1		19
join -1 area	17
join -1 defect		23
join -1 finish	-24	20	-13
join -1 fixture	25	65	13
join -1 material			-19
join -1 part	12	56	43
join -1 size		-23	65
join -1 surface			39
join -1 tells	50	45	-22
join -1 tool	15	-24	-24
join -1 verbish			-26
join -1 word	-14
join -2 area	17	27	-33
join -2 defect		-31
join -2 finish		-32	20
join -2 fixture	21	45	16
join -2 material	-16	24	40
join -2 size	27	-22	27
join -2 surface		-24
join -2 tells	-18	15	32
join -2 tool		-27	-14
join -3 defect		-15
join -3 finish	-13	18
join -3 material			-23
join -3 part			30
join -3 size	-25		-36
join -3 surface		35
join -3 tells		-38
join -3 tool	-16		-14
join -3 word		-13	-14
join -3 work	-13	-57	-24
join area	34	13
join area+area	15	84	-22
join area+defect		-22
join area+finish		-20	29
join area+fixture		20
join area+material	20	25	30
join area+part	60
join area+size		-28
join area+surface	36	-26
join area+tells	-43	83
join area+tool	-22	17
join area+verbish		23	20
join area+word		-31
join area+work	21
join defect			14
join defect+finish		-15
join defect+fixture		17
join defect+material			-14
join defect+part		21	30
join defect+size		-17	-40
join defect+surface		18	18
join defect+tells		-35
join defect+word			20
join finish		31	-23
join finish+area			35
join finish+finish	-29
join finish+fixture		26	-42
join finish+material			-45
join finish+part		-49	-29
join finish+surface	-17	79
join finish+verbish		13
join finish+word	13		25
join fixture	-13		-22
join fixture+area		-60	-24
join fixture+defect		-29	-35
join fixture+finish		33
join fixture+fixture	15
join fixture+material			-21
join fixture+part		15
join fixture+tells	66	-13
join fixture+tool	-19
join fixture+verbish			-17
join leads above	17
join leads along	-16
join leads around	53
join leads at	32	33
join leads at term verb	-13
join leads behind	18	19	16
join leads by	60	24	22
join leads by term	-24
join leads down	25
join leads for	52	-20	24
join leads from	19		-18
join leads in	25	-12	21
join leads in term term	64
join leads in term word		51
join leads in word	-25
join leads in word term	-12
join leads in word word	-36
join leads mark		28	51
join leads mark quantity		-12
join leads near	64
join leads number	-17
join leads of	18	33
join leads of term word		61
join leads off	77	34
join leads on	20		25
join leads on quantity	54
join leads on term verb	32
join leads on term word	23
join leads over	52	44	-19
join leads quantity at	-40
join leads quantity from	-13
join leads quantity of	-18
join leads quantity on	-50
join leads quantity word	55
join leads term		38	72
join leads term by	-28
join leads term word	-23
join leads through	33
join leads time	78
join leads to			26
join leads to verb	-12	-18
join leads under	58	-27	95
join leads up in	46
join leads verb		34
join leads verb at	22	28	34
join leads verb at quantity	-18
join leads verb by	19
join leads verb from	-18
join leads verb in		35	-37
join leads verb mark	26
join leads verb of	36
join leads verb on	21	59	63
join leads verb on word	35
join leads verb quantity of	-57
join leads verb quantity on	41
join leads verb quantity verb	-13
join leads verb term verb	37
join leads verb term word	-23
join leads verb to	-34
join leads verb verb		-21
join leads verb verb in	30
join leads verb verb quantity	-13
join leads verb verb term	-28
join leads verb verb word	-21
join leads verb with	18		19
join leads verb word	-17	32
join leads verb word on	60
join leads verb word quantity	88
join leads verb word term	-14
join leads verb word verb	-31
join leads verb word word	26
join leads with quantity	-19
join leads word	-14	-20	19
join leads word in		20
join leads word on			12
join leads word quantity	16	-15	-13
join leads word quantity of	-15	-35
join leads word quantity word	-18
join leads word term	-13	-13
join leads word term verb	15
join leads word term word	-19
join leads word to		-51
join leads word verb		45	32
join leads word verb at	-19
join leads word verb in	-36	-13	13
join leads word verb on	43	86	18
join leads word verb quantity	-29	-66
join leads word verb term	-18
join leads word verb verb	-19
join leads word verb word	-15	-14	39
join leads word word	-14	-40
join leads word word quantity	-15
join leads word word term	-13
join leads word word to	-13
join leads word word verb	-53	-18
join leads word word word	81
join material	-16	15	14
join material+area	15	27
join material+defect	-21	18
join material+finish			51
join material+fixture		17
join material+material		16	19
join material+part	-16	-21	47
join material+size	-39	-27
join material+surface		28	15
join material+tells	-27	-38	30
join material+tool			-15
join material+verbish		-33	18
join material+word	-13		-29
join part	-23	-31	-36
join part+area	-38		-20
join part+defect		-29	-20
join part+finish		-21
join part+material	-15	24
join part+part			-20
join part+size	23
join part+surface		-20	-33
join part+tells	-24	-18
join part+tool	-15	-31	-35
join part+verbish	-23		-22
join part+word	-13	-28	-12
join same-before	15		14
join same-before area			16
join same-before defect			-19
join same-before finish		-24	-47
join same-before fixture		-20	15
join same-before material	19	13	37
join same-before size		50
join same-before tells	-28	31	26
join same-before tool		48	28
join same-before verbish		-26
join same-before work		44	25
join size		-19
join size 3	29	20
join size+area	14		-25
join size+defect			-17
join size+finish	-20
join size+fixture	18		55
join size+material		-34
join size+part		-17
join size+size			73
join size+surface	-17		-54
join size+tells	58
join size+verbish			-14
join size+word	-13	18	-21
join sizes 1+2		13
join sizes 2+3	19	31	39
join sizes 3+1	21	31
join sizes 3+2	28
join sizes 3+3	-30	-30	-44
join surface	23	13
join surface+area	62	-13	22
join surface+defect		-12
join surface+finish		-29	-54
join surface+fixture	16	39
join surface+material		16
join surface+part			-34
join surface+size	-21
join surface+surface	24	14	15
join surface+tells		26	-14
join surface+tool	-28	-23
join surface+verbish		23	-28
join surface+word		-14
join surface+work	-13		-13
join tells	13	48	27
join tells+area			-17
join tells+defect			43
join tells+fixture	24	-16	-24
join tells+material	30		-28
join tells+part	-25	50	43
join tells+surface		19
join tells+word		44	12
join tool	-16	15	36
join tool+defect			-33
join tool+fixture	-23	-37	30
join tool+material	-20		54
join tool+part		28	19
join tool+surface		49	-17
join tool+verbish	20	33
join verbish		-14	-13
join verbish+area	35	-31	-20
join verbish+defect			-12
join verbish+finish		-15
join verbish+fixture			-15
join verbish+material	-16	-14	14
join verbish+part	21	20
join verbish+size	-16
join verbish+surface	-24	23
join verbish+tells			-17
join verbish+tool		-18	-30
join verbish+verbish	16
join verbish+word	-12	-29
join word			16
join word+area		18	-28
join word+defect		-13	17
join word+finish		19	-41
join word+fixture			47
join word+part	14	22	17
join word+size	26
join word+surface		-21	25
join word+tells	-32	41
join word+tool	30	13	31
join word+verbish			-30
join word+work	-28	56
join work	36	-103	43
join work+fixture		-51
join work+material		-25	-18
join work+part		-29
join work+word		-31
kind +1 area	-21
kind +1 finish			-23
kind +1 part		-20	-14
kind +1 size	-17
kind +1 surface	-29
kind +1 tells		-21	19
kind +1 tool	-12		-19
kind +1 verbish		-23	-18
kind +1 word			-17
kind +1 work		-32
kind -1 area		-16
kind -1 defect	-20	-17
kind -1 finish		-42	-36
kind -1 fixture		19	16
kind -1 material	35	28
kind -1 part		76	49
kind -1 size			31
kind -1 surface	14	30
kind -1 tells	-24	-18	36
kind -1 tool		-28	-29
kind -1 verbish	12
kind -2 area	-22	18	16
kind -2 defect		-30	-26
kind -2 finish	-32	-25	28
kind -2 fixture	57	31	16
kind -2 material	19	31	24
kind -2 part	29	14
kind -2 size	26	24
kind -2 surface		-23
kind -2 tells	-15	-20	-20
kind -2 tool		-22	16
kind -2 verbish	-26	23
kind -2 work	-12
kind -3 area		-39	-32
kind -3 finish	-15	-29
kind -3 fixture		19	23
kind -3 material		-20
kind -3 part		20	-16
kind -3 size	-27		-24
kind -3 surface	41	17	-27
kind -3 tells		-27
kind -3 tool	-19	-16
kind -3 word	-14	12
kind -4 area		22
kind -4 fixture	23	-14
kind -4 material		-13
kind -4 size	-25	-28
kind -4 surface			-17
kind -4 tells	-14	-15
kind -4 tool	50	-17	-26
kind -4 verbish		-21
kind -4 word	-14	-13
kind defect	-20		-12
kind finish	-16	-13	-13
kind fixture	25	13	13
kind here-after area	51	30
kind here-after defect	-23	-30
kind here-after finish		15	42
kind here-after fixture		67
kind here-after material		28	-16
kind here-after part	44	41	24
kind here-after size	32	54	14
kind here-after surface		38	25
kind here-after tells	-14	57	-21
kind here-after tool	-61	-24	21
kind here-after verbish	13	-45
kind here-after word	-15	-17
kind here-after work			20
kind here-before area	14	-103
kind here-before defect			-73
kind here-before finish	-45
kind here-before fixture	22	31	29
kind here-before material	21	18	28
kind here-before part	33	16	30
kind here-before size			50
kind here-before surface		26
kind here-before tells	-57
kind here-before tool		28	24
kind here-before verbish		76	-21
kind here-before word			29
kind material	13
kind part	18	21	12
kind tells	-25	-13
kind tool		-14
kind word	-15
kind work	-17	-20
lead a -1	45
lead a -3	-52
lead area -1	-13
lead area -2	17
lead area here-after	-18
lead area here-before	15
lead fixture -1	-14
lead fixture -4	23
lead fixture here-after	-15
lead fixture here-before	24
lead material -1	17
lead material -2	-14
lead material here-after	-28
lead material here-before	18
lead number -1	30
lead number -2	25
lead number -3	33
lead number -4	-29
lead number here-before	20
lead part -2	-14
lead part -4	-18
lead part here-after	-26
lead part here-before	39
lead quantity -1	49
lead quantity here-after	-56
lead quantity here-before	48
lead role here-after	90
lead size -1	-55
lead size -2	-34
lead size here-after	19
lead size here-before	60
lead surface -1	-31
lead surface -2	52
lead surface -3	-19
lead surface here-after	-13
lead surface here-before	20
lead tells here-before	-98
lead that -4	45
lead that here-after	-12
lead the -1	34
lead the -2	-48
lead the -4	-16
lead the here-after	67
lead the here-before	-31
lead tool here-after	31
lead verbish -1	20
lead verbish -2	22
lead verbish -3	32
lead verbish here-after	-32
lead verbish here-before	36
lead with here-before	34
lead word -1	26
lead word -2	14
lead word here-after	-21
lead word here-before	15
led none far		-21	-13
led none here	16
led none none 0 outside 1		-38	-26
led none none 0 outside 3			-17
led none none 0 outside 4	31
led none none 1 outside 0	28
led none none 1 outside 2	-12	-16	-13
led none none 1 outside 3			-25
led none none 1 outside 4			-13
led none none 2 outside 0	26
led none none 2 outside 1	-17		-13
led none none 2 outside 3		-12	-17
led none none 2 outside 4	-22	15
led none none 3 outside 0	22	-18
led none none 3 outside 1	-17	12
led none none 3 outside 4	16
led none points 0 outside 1		-17	-20
led none points 0 outside 2		-16	-19
led none points 0 outside 3		-22
led none points 1 outside 0	-25
led none points 1 outside 1	-40	-18	-17
led none points 1 outside 2	82
led none points 1 outside 3			-18
led none points 1 outside 4			-14
led none points 2 outside 0	-33
led none points 2 outside 1	-13		15
led none points 2 outside 2	24		-21
led none points 2 outside 3		-19
led none points 3 outside 0			-27
led none points 3 outside 1	34	-17	-21
led none points 3 outside 2		-21	29
led none points 3 outside 4		53
led turn far			-14
led turn here		13	17
led turn none 0 outside 1		34
led turn none 0 outside 2		13
led turn none 0 outside 3			-31
led turn none 0 outside 4		-44	-28
led turn none 1 outside 0		62	37
led turn none 1 outside 1		-18	-22
led turn none 1 outside 2			-16
led turn none 1 outside 3		-15	-26
led turn none 1 outside 4		-13	-22
led turn none 2 outside 0			16
led turn none 2 outside 1		-28
led turn none 2 outside 2			-24
led turn none 2 outside 3			-19
led turn none 3 outside 0		31
led turn none 3 outside 1		-40
led turn none 3 outside 2		15	-13
led turn none 3 outside 3		-19
led turn pair		13	17
led turn points 0 outside 1			17
led turn points 0 outside 2		25
led turn points 0 outside 3		26
led turn points 0 outside 4		17	-20
led turn points 1 outside 0		14
led turn points 1 outside 1			12
led turn points 1 outside 2		17	60
led turn points 1 outside 3			-37
led turn points 1 outside 4		-26	-23
led turn points 2 outside 0			39
led turn points 2 outside 1		-35	25
led turn points 2 outside 2			40
led turn points 2 outside 3		-44
led turn points 3 outside 0		13	14
led turn points 3 outside 1		24
led turn points 3 outside 2		-25	-20
led turn points 3 outside 3		14
led verb far+phrase		13
led verb here			13
led verb none 0 outside 1		41	38
led verb none 0 outside 3		18
led verb none 0 outside 4		-38	12
led verb none 1 outside 0		48	38
led verb none 1 outside 1			-12
led verb none 1 outside 3		-14	13
led verb none 1 outside 4		-24	-20
led verb none 2 outside 0		45	24
led verb none 2 outside 1		-16	-16
led verb none 2 outside 2		-12	19
led verb none 2 outside 4		22	28
led verb none 3 outside 1			-29
led verb none 3 outside 2		29	53
led verb none 3 outside 3		-25	14
led verb none 3 outside 4		-25
led verb pair		30	25
led verb points 0 outside 1		18	-29
led verb points 0 outside 2			27
led verb points 0 outside 3		24	39
led verb points 0 outside 4		-22	22
led verb points 1 outside 0			-17
led verb points 1 outside 2		17	18
led verb points 1 outside 3			38
led verb points 2 outside 0			-27
led verb points 2 outside 1		15
led verb points 2 outside 2		25
led verb points 2 outside 3		24
led verb points 2 outside 4		-25
led verb points 3 outside 0		-13
led verb points 3 outside 3		22	52
lemma be object	-31
lemma be subject	36
lemma bend subject	22
lemma crack subject	40
lemma find object	73
lemma get object	-17
lemma get subject	39
lemma go object	-38
lemma go subject	-68
lemma hang object	-52
lemma hang subject	19
lemma have subject	-13
lemma hum subject	-31
lemma leave object	12
lemma run object	-38
lemma run subject	29
lemma say object	38
lemma send object	-42
lemma sit object	-38
lemma sit subject	21
lemma stick object	-44
lemma trip subject	-63
number many many		89	80
number many one		-56	-66
number none many		13
number one many		-16
number one one		17	12
opens CONJ		23
opens COP		-36	24
opens DET		35
opens OPR		22
opens PREP	-25	-37	-17
opens PRON			-13
opens Q0		37	12
opens Qcount			-17
opens Qlength		-61	-25
opens Qtime			-18
opens Ton		13
opens Vmeasurei		-16
opens Vmoveb		-36
opens Vmovep	-38		-57
opens Vmoves	-29	-32
opens Votheri	37
opens Vsayb	-15	-52	-16
opens Vworkb	-27	-19
opens Vworkbp	-41
opens Vworkbpp		18	-26
opens Vworki	-29	-20	24
opens Vworkpp	-29
opens Vworks	31		34
opens tarea	16	23
opens tarea's	16	18	-15
opens tdefect	-22	-14	-13
opens tdefect's		37	18
opens tdefectVotherb	-33	14
opens tdefectVotheri	-16	-25	-18
opens tdefectVotherp	-17	-43
opens tdefectVotherpp	-14	-17
opens tdefectVothers	-16
opens tdefectVworkbpp	-14
opens tdefectVworkp		-15
opens tdefectVworkpp		-14	-22
opens tfinish	-26		-15
opens tfinishVworkb	-32
opens tfinishVworkpp	-29	-17
opens tfixture	35	18	25
opens tfixture's	105
opens tfixtureVworkb		41	27
opens tfixtureVworks	-16	-23	27
opens tmaterial		18
opens tmaterial's	60	-15
opens tmaterialVotherb	20	45
opens tmaterialVworkb		18
opens tmaterialVworki	72	62	45
opens tmaterialVworks		-15
opens tpart	31	29	20
opens tpart's	29	26
opens tpartVotherb	27	-40	15
opens tpartVothers			21
opens tpartVworkb		30	16
opens tpartVworki	-16
opens tpartVworks		66
opens trole	-39	-15	-21
opens trole's			-29
opens tsurface	14	14
opens tsurface's	15	-34	-38
opens tsurfaceVotherb	-37	-31	-24
opens tsurfaceVothers		-21
opens tsurfaceVworkb	-13	20
opens tsurfaceVworki	-17		16
opens tsurfaceVworks		-38
opens ttool	19	-14
opens ttool's	56	-22
opens ttoolVworkb	-20	-14	-81
opens ttoolVworks	-48
opens twork	-13	13	18
opens w	-29	-21	-13
opens w's	-23	-54
opens wed	-22
opens wing	-18
opens wly		-43
opens-with -4	-21
opens-with here-after	40
order before far+here		19	-12
order before here			39
order before pair			28
order behind far+here			32
order behind far+phrase		13
order behind here			-21
order behind pair		49
outside 0 lacks none 1	28	52	32
outside 0 lacks none 2	26	28	19
outside 0 lacks none 3	22
outside 0 lacks points 1	-25		-22
outside 0 lacks points 2	-33		-15
outside 0 lacks points 3			-21
outside 1 lacks none 1		-17	-25
outside 1 lacks none 2	-17	-27	-25
outside 1 lacks none 3	-17		-26
outside 1 lacks points 0			-44
outside 1 lacks points 1	-40		-13
outside 1 lacks points 2	-13		16
outside 1 lacks points 3	34		-13
outside 2 lacks none 0			-14
outside 2 lacks none 1	-12	-20	-17
outside 2 lacks none 3		24	33
outside 2 lacks points 1	82		38
outside 2 lacks points 2	24	17
outside 2 lacks points 3		-28	17
outside 3 lacks none 0		17	-13
outside 3 lacks none 1		-25	-20
outside 3 lacks none 2			-16
outside 3 lacks none 3		-37	13
outside 3 lacks points 0			32
outside 3 lacks points 1		13
outside 3 lacks points 2		-14
outside 3 lacks points 3		20	54
outside 4 lacks none 0	31	-39
outside 4 lacks none 1		-29	-35
outside 4 lacks none 2	-22	32	13
outside 4 lacks none 3	16	-31
outside 4 lacks points 0		-15
outside 4 lacks points 1			-17
outside 4 lacks points 2		-20
outside 4 lacks points 3		45
pair by 1	-16
pair by a		-32	-18
pair by about	-23	-13
pair by above	-36
pair by across	40
pair by after	14
pair by all	22	-24	20
pair by along	-25		63
pair by an	-59	20
pair by and	-23	-34
pair by any	28
pair by are	22		61
pair by around	36		47
pair by back	-14	-34
pair by bad	-38
pair by be	46	52
pair by been	-14
pair by before		-33
pair by behind	31		41
pair by both	54		-52
pair by bottom	27
pair by box	60
pair by boxes	-13
pair by by	12		33
pair by came	-30	-25	34
pair by can	41	-26
pair by clean	-28
pair by come		54
pair by comes	-34
pair by cut	-12
pair by don't	-18
pair by done	-13
pair by down	-19	-50	-32
pair by dumps	-21
pair by each	-35
pair by em	23
pair by every	-22
pair by except	36
pair by finally	102
pair by for	46	-14	26
pair by from	-16		55
pair by front	-31
pair by get	-31
pair by go	-31	48
pair by goes	16	78
pair by gone	56
pair by got		51	-38
pair by gotta		69
pair by guy	14
pair by had	-24		19
pair by hanging	-23
pair by hangs	22
pair by has	17	-13	35
pair by have	38	-19
pair by her	76
pair by his	-17
pair by house	31
pair by hung			-23
pair by i		38	53
pair by in	25
pair by into	-27		-56
pair by is		-20
pair by it	-27	-50	-45
pair by it's	25
pair by its	-27	-28	43
pair by just	-36
pair by left	32
pair by like	-19	-35
pair by low	-41
pair by mark	-19	-32
pair by me	86
pair by my	32
pair by near	25
pair by need	-17	63
pair by needs	83
pair by no	-28	-13
pair by nothing	-37
pair by number	25		81
pair by of		27
pair by off	21	49
pair by old	18
pair by on	35	30	44
pair by once		-15
pair by only	-42
pair by or	17	-40
pair by out	-20	-14
pair by over	21	33	-63
pair by pulled	-34
pair by put	-47
pair by quantity		-52
pair by reads	33
pair by right	-54
pair by round	-27
pair by run	-21
pair by set	-35		35
pair by size	-56
pair by so	-31
pair by still	33	19
pair by strip	28
pair by term		-16	-28
pair by than	-54
pair by that	36
pair by the	17	14	25
pair by their	-43
pair by there	-35		27
pair by they	76
pair by thick	-55
pair by those	31
pair by to	-13	-17
pair by too	-26
pair by took	27
pair by under	24		74
pair by up	-26	-13	14
pair by was		-43
pair by way	-17
pair by we	-37
pair by went	-22		58
pair by were	-21
pair by when		-27
pair by where	-48		-22
pair by which	-25
pair by will		-25
pair by with		-42	-15
pair by without	-14
pair by you	-16
pair false		15	14
pair true		-18
part +1 object	-20		-14
part +1 opens		-16	-12
part +1 subject		-14
part +1 subject-late	-13	-38	-15
part -1 bare			-24
part -1 object	13	13
part -1 opens		18	16
part -1 subject	25	28	32
part -1 subject-late			-16
part -2 bare	-17
part -2 object			-19
part -2 opens	25	13	15
part -2 subject		24	19
part -2 subject-late	13	13	30
part -3 bare	-22
part -3 object		-19	-22
part -3 opens		13
part -3 subject		17
part -3 subject-late		47	37
part -4 object			-15
part -4 opens	14
part -4 subject		-18
part -4 subject-late	-27		-13
part bare	-18		-13
part bare area		36
part bare defect	-20	-24	-26
part bare material			-31
part bare size	-29	30	-22
part bare surface	-15	17	-16
part bare tells	27	21
part bare tool	-19	20	-20
part bare verbish		-20	22
part bare word	-20	-15
part here-after bare	-30		-17
part here-after object	-14
part here-after opens	61	18	33
part here-after subject	57	37	21
part here-after subject-late	16	85	31
part here-before bare		15
part here-before object	-65	22	35
part here-before opens	19		-45
part here-before subject	22		23
part here-before subject-late	22	30
part object	-21		-17
part object defect	-15
part object finish	-17		-22
part object fixture	14
part object material			-14
part object part	23	34	15
part object surface		14
part object tells	-30	-12
part object tool	-24	-15
part object verbish		-17	-20
part object word	-19		-16
part object work		-34
part opens	26		12
part opens area	14	-17	19
part opens defect	-22	-23
part opens finish	-19	-55	15
part opens fixture	30
part opens material	47		36
part opens part	15	22	14
part opens surface	38	16	-23
part opens tells	15
part opens tool	18	-27
part opens verbish		36
part opens work			12
part subject	18		16
part subject area	12		-15
part subject defect	-68	-37
part subject finish	-14	-50
part subject fixture	30	33	26
part subject material	16	15	16
part subject part	13
part subject size	-21	-20	36
part subject surface	21
part subject tells	-36	-44	-13
part subject tool	48
part subject work	-25
part subject-late area		-28
part subject-late defect	12	45	-26
part subject-late finish	-14
part subject-late fixture			-19
part subject-late material		57	35
part subject-late part	-20	14
part subject-late surface	18		-25
part subject-late verbish	28
person	-35
phrase behind far		13
phrase nouns 2		36
phrase opens all			-30
phrase opens an		-18
phrase opens anything		-17
phrase opens are			14
phrase opens at		-22	-14
phrase opens for		-18
phrase opens from		-68
phrase opens in		-18	-29
phrase opens is		-32	17
phrase opens it		-20	-13
phrase opens me		23
phrase opens new		38
phrase opens nothing		31
phrase opens number		-39
phrase opens of			-15
phrase opens out		-54
phrase opens quantity		18	-24
phrase opens that		19
phrase opens the		33	20
phrase opens to		-14	-35
phrase opens up		-44	23
phrase opens with			-15
phrase opens yet		-56
phrase points it 0		-39	-26
phrase points it 1		50
phrase points it 2		41
phrase points nothing 0		18
phrase points nothing 2		29
phrase points one 0		-27	30
phrase points one 1		50
phrase points that 0		31
phrase points that 2		-13
phrase size 0		27
phrase size 3		14
phrase size 4		16
phrase size 5		43
phrase size 7		25
phrase subject and behind present		15	17
phrase subject modal		19
phrase subject owed		36
phrase subject present			14
points both -2			19
points both -4			-14
points both here-after			-37
points both here-before			68
points both object			-20
points both subject			45
points both subject-late			-19
points em +1			-17
points em -1		94	42
points em -2		-29	-30
points em -3		66	-17
points em -4		-85	12
points em bare		-59	-40
points em here-before		-36	19
points em opens			-26
points em subject		-36	62
points em subject-late			-35
points it +1		-36	-16
points it -2			34
points it -3		21	16
points it -4			-12
points it bare		-29	-15
points it here-after		-23	-53
points it here-before		21	37
points it object		-26	-26
points it opens			15
points it subject		31	18
points it subject-late			35
points none +1			-18
points none -1		14
points none bare			-13
points none here-after		17	15
points none here-before		16	17
points none object			-15
points none opens		15	12
points one +1		-12
points one -1		91	54
points one -2			43
points one -3		-44	-81
points one -4			-28
points one here-before		26	-32
points one object		22	-47
points one opens		15
points one subject		-20	32
points one subject-late		22
points that +1		-22	-21
points that -1		40	49
points that -2		28	-35
points that -3			-24
points that bare			-16
points that here-after		28	48
points that here-before		-31	16
points that opens		-33	-27
points that subject		32	56
points that subject-late		16
points them +1		-13	-12
points them -1		85	94
points them -2			-32
points them -3		27
points them -4		-73	-36
points them bare		-14
points them here-after		43
points them here-before			-48
points them object		46	20
points them opens			-16
points them subject		-27
points them subject-late		39
points they -2		55
points they -3		-25
points they -4		-43
points they here-after		-37
points they here-before		95
points they object			54
points they subject		13
points they subject-late		-17
points this -2		101
points this object		32
points those +1		-24
points those -1		-51
points those -3		59
points those -4		17
points those bare		79
points those here-after		-18
points those here-before		46
points those object			-44
points those subject		-53
points those subject-late		35
prep about	-40
prep above	-18	-56	-35
prep across	25		-31
prep after	-26	-70	-13
prep along	14	-41	19
prep around	35
prep at	-21	-12	-18
prep before		-41
prep behind	14
prep below	-57
prep between	63	-19
prep by	-30	-29	-40
prep down	31	-18	-26
prep for	13	19	-18
prep from	-31	-39	-17
prep here-after after		-80
prep here-after along	-32
prep here-after at	-24		-26
prep here-after behind	38
prep here-after below	-85
prep here-after by		-23	18
prep here-after for	-63	71	-50
prep here-after from	-49	-24	14
prep here-after in	24		23
prep here-after near	-63
prep here-after of	31	26	26
prep here-after off	48	31	56
prep here-after on	34	-15	25
prep here-after out			26
prep here-after over	75
prep here-after to	-61	23	-14
prep here-after under	-46		23
prep here-after with	-53	-24	-41
prep here-before at	26
prep here-before before		15
prep here-before by	-93
prep here-before in			31
prep here-before of	32	22	-39
prep here-before on	-30		21
prep here-before over	20
prep here-before to		65
prep in		-16
prep into	-38	20	-62
prep off	48	17
prep other about		-62
prep other above		-58
prep other across			-30
prep other after		-25	-27
prep other along	58	-37	25
prep other around	-20
prep other at	-25	-14	-17
prep other before		-78
prep other below	14		-12
prep other between		-14	-13
prep other by	-24	-27	-44
prep other down	48		-28
prep other for	28
prep other from	-13	-40	-27
prep other in	-12	-14	-19
prep other into	-46	31	-23
prep other off	45		-13
prep other on			-23
prep other out	-16	-23	-27
prep other over	-33	-27	-29
prep other past		-31
prep other through	-16		37
prep other to	-32	-27	-18
prep other toward	-70	-13
prep other under		-55	-20
prep other up	14
prep other with		-29	-17
prep other without		32
prep out	-24	-15
prep over	16	-19	-37
prep past	-27	-31
prep through	48	-12	53
prep to	-28		-19
prep toward	-75	-57	-17
prep under	-25	-55
prep up	22	13
prep with	-18	-29	-28
prep without	-28	35
rank after 2	-17	-17	-19
rank after 3	-30		-62
rank before 0	42
rank before 2	-16
rank before 4		13
rule done/none			51
rule lacks none 0			15
rule lacks none 1			19
rule problem/absent	-31
rule problem/refuses	-22
rule problem/wrong	15
rule size 4	15		29
rule size 5			28
rule word 		-16
rule word 3			-13
rule word at		-29
rule word back	30
rule word bedroom	14
rule word box	-32
rule word ceiling	38
rule word closet	-19
rule word coat			68
rule word corner	-51
rule word down		-12
rule word eight			-21
rule word faucet	-19
rule word feet			54
rule word finish			39
rule word first		-13	71
rule word four			12
rule word front	-21
rule word go		-16
rule word hall	15
rule word hinge	20
rule word inch			-18
rule word install		33	36
rule word island	-21
rule word kitchen	-22
rule word leave		-15
rule word light	15
rule word old			23
rule word on			47
rule word one		-13	80
rule word post	-18
rule word rail	17
rule word room	22
rule word round		55
rule word shelf	26
rule word sill	20
rule word slab	14
rule word smoke	-17
rule word tile	13
rule word tiles	14
rule word wall	29
rule word water			-14
says its verb		-16	-13
says owed		14
sentences -1	-34	-36	-20
sentences -1 bare	-27	-29	-15
sentences -1 object	-12	-19
sentences -1 opens	-14	-27
sentences -1 subject	-25		-15
sentences -1 subject-late		-19	-30
sentences -2	-22	-32	-40
sentences -2 bare	-17	-20	-19
sentences -2 object	-13	-19	-15
sentences -2 opens		-25	-27
sentences -2 subject	-17	-17	-22
sentences -2 subject-late		59	-17
sentences 1	-19	-25	-17
sentences 1 bare	-19	-19
sentences 1 object		-16
sentences 1 opens	-15	-18	-15
sentences 1 subject		-17
sentences 1 subject-late	-15	-32	-26
size 1	-34	-18	-17
size 1 far+here		-16	25
size 1 here	-12
size 1 outside 1	-13	-13	-12
size 1 pair		-51
size 2	18
size 2 far+phrase		-20	-13
size 2 here	25		15
size 2 outside 0	15	12
size 3	12	12
size 3 far+phrase		17
size 3 here	51	30	31
size 3 outside 0	21	16	18
size 3 outside 2			15
size 3 pair	13	38	35
size 3 told			-21
size 4	14	19
size 4 far		-26
size 4 far+here		18
size 4 far+phrase			-14
size 4 here	104	40	40
size 4 outside 0	18	33	13
size 4 outside 1		29
size 4 outside 2		13
size 4 outside 3	14	-12	-13
size 4 pair	12	61	31
size 4 told		19	17
size 5			17
size 5 far+here	-13
size 5 far+phrase			32
size 5 here	85		32
size 5 outside 0	38	41
size 5 outside 1		12
size 5 outside 2			17
size 5 outside 3	-27		47
size 5 outside 4		-15
size 5 pair	24	36
size 5 phrase		30
size 5 told		-23	-24
size 6 far	24	-27	37
size 6 far+here		-37	-29
size 6 far+phrase		49
size 6 outside 0		-16
size 6 outside 1			14
size 6 outside 2		31
size 6 outside 3	30	17
size 6 outside 4		-13
size 6 pair		-14
size 6 told		-20
size 7	-18	-15	-14
size 7 far	-14	-27	-49
size 7 far+here	-26	13
size 7 far+phrase		-31
size 7 outside 0		18
size 7 outside 3		-19
size 7 outside 4	-26	-25	-18
size 7 pair			-12
size 7 phrase		19
size 7 told		-19
sort CONJ		-16
sort COP		-32	16
sort DET		29
sort NEG			-27
sort OPR		45
sort PREP	-23	20
sort PRON			-19
sort SUB			-15
sort Vbuyb		-22
sort Vhaveb		-49
sort Vmeasureb	-24
sort Vmeasurei	-42		-34
sort Vmeasures		-13
sort Vmoves			-20
sort Vneeds	-15	-20
sort Votheri	31		16
sort Votherp			-16
sort Vsayb	-70	-55	13
sort Vseeb	-13	23
sort Vworkb		29
sort Vworkbp	23
sort Vworkbpp			26
sort Vworki		26	23
sort Vworkpp	-24
sort Vworks	21		-15
sort w	-19		-15
sort w's		-23	-16
sort wed	-36
sort wing	-29
sort wly		-63	-19
stands after		-20	-16
stands after 0 of 0	-32	-28	-28
stands after 1 of 0	-17	-30	-30
stands after 2 of 0		-30	-17
stands after 2 of 1	-20
stands after 2 of 2	-12
stands after has 0	-46	-47	-42
stands after has 1		-13	-14
stands after has 2	-13
stands after points em		-21
stands after points it		-27	-21
stands after points it's	-30	-23
stands after points nothing		-19	-13
stands after points one			-17
stands after points that		-13	-26
stands after points that's		-25	-23
stands after points them		-17	-18
stands after points they		-45
stands after points those		-22
stands before 0 of 0		14	38
stands before 0 of 1	17
stands before 0 of 2		-18
stands before 1 of 0	-64		21
stands before 1 of 1	17		-13
stands before 2 of 0	62	13	-12
stands before 2 of 1	-18	-13
stands before 2 of 2	-15
stands before 3 of 0	28	16
stands before 3 of 1	-39
stands before 4 of 0	13	-20	-20
stands before 4 of 1	-19	31
stands before 4 of 2		23	23
stands before 4 of 3			59
stands before has 0	54	32	38
stands before has 1	-14		-18
stands before has 3			22
stands before points em		21	-17
stands before points it			20
stands before points it's	-58	-26
stands before points one		46
stands before points ones			-22
stands before points that		20
stands before points that's		31	37
stands before points them		32	36
stands before points they		-30
stands before points they're		25
stands before points those		64
stands here	14	20	14
stands here 0 of 1	21	28	20
stands here 0 of 2	33		22
stands here 0 of 3	61	30
stands here 1 of 2	-15
stands here 1 of 3			42
stands here 2 of 3	-25	-20	-29
stands here 3 of 3	-42		-72
stands here has 1	21	28	20
stands here has 2	18	12	13
stands here points both			26
stands here points em			24
stands here points it's	76	36	-62
stands here points nothing	14	26	14
stands here points one		-30
stands here points that			43
stands here points that's		36
stands here points them		20	-37
stands here points they		41
subject none +1	-23
subject none -1	21
subject none here-before	14
subject own +1	-12
subject own here-after	-22
subject own here-before	24
subject person +1	-48
subject person -2	-12
subject person -3	-15
subject person -4	15
subject person here-after	14
subject person here-before	33
subject pointer +1	-31
subject pointer -1	21
subject pointer -2	16
subject pointer here-after	17
subject pointer here-before	-77
subject tells +1	15
subject tells -1	-36
subject tells -2	-60
subject tells -4	-26
subject tells here-after	35
subject tells here-before	-34
told as bought before		21
told as done after		-28
told as done here		-19
told as fixed after		-33	-28
told as fixed before		-28	30
told as fixed here		-54	19
told as have before	-12	34	12
told as have here	-16
told as need before	-12	-45	-26
told as need here	87	37
told as open after		-34	-25
told as open before		21	-15
told as ordered before		57
told as used after	32	13
told as used before		-12	20
told as used here	15
told done 0 near		-13
told done 0 touches		23
told done 1 near		-17
told fixed far		-17	-44
told fixed near		26	-41
told fixed over			13
told fixed touches			-14
told open far		-16
told problem 0 far			-17
told problem 1 far		-20
told problem 1 near		-16	-17
told problem 1 over			36
told size 3			-21
touches-after	-18
touches-before	25
unit none defect	-20
unit none finish	-16
unit none fixture	24
unit none part	19
unit none tells	-25
unit none word	-15
unit none work	-17
use buy		37	13
use have		-17	20
use measure	-25	-15
use move	-18
use need		24
use return		13
use say	-25
use see		19	-21
use use	14
verb behind #		37	35
verb behind a		15	-43
verb behind already			-16
verb behind anybody		51
verb behind are			52
verb behind be		87
verb behind been			42
verb behind can		-14
verb behind can't		34
verb behind don't		39
verb behind get		107
verb behind gonna		17
verb behind have			35
verb behind he		-64
verb behind he'll		31
verb behind he's		23
verb behind i			22
verb behind i'd		-71
verb behind i'll		32
verb behind i'm		32
verb behind i've			77
verb behind is		-49	39
verb behind it		-32	15
verb behind it's		-28	75
verb behind must		-22
verb behind needs		45
verb behind no			-86
verb behind nobody		43
verb behind not		50
verb behind number			31
verb behind quantity		-57	-18
verb behind she		-68	-72
verb behind should		30
verb behind still		-20
verb behind term		-46
verb behind that's			-28
verb behind the		-30	-14
verb behind they		-35
verb behind they're		-17
verb behind time		28
verb behind to		75	29
verb behind wants		56
verb behind was			-46
verb behind we		29	16
verb behind will		63
verb behind you		16
verb form b main		33	21
verb form b side			-18
verb form bp main		47
verb form bp side			-33
verb form bpp main		37
verb form bpp side		39	51
verb form i main		79
verb form i side		20	-37
verb form p main		-29	29
verb form p side		-65
verb form pp main			30
verb form pp side		-21	34
verb form s main		-16	24
verb form s side		29	-35
verb lemma add imperative		42
verb lemma bolt past			-62
verb lemma bring imperative		34
verb lemma bring modal		20
verb lemma call imperative		46
verb lemma call present		64
verb lemma cap past			30
verb lemma caulk past			42
verb lemma change past			16
verb lemma change present			46
verb lemma check imperative		48
verb lemma check past			15
verb lemma clean past			62
verb lemma close present		-32
verb lemma come copula		-66
verb lemma cut copula			25
verb lemma cut imperative		58
verb lemma cut none		43	59
verb lemma cut owed		42
verb lemma cut past			-49
verb lemma do copula			43
verb lemma do none			-19
verb lemma drill past			-47
verb lemma dry copula		-37	-16
verb lemma dry imperative		-47
verb lemma dry none			-37
verb lemma fill past			46
verb lemma finish past			32
verb lemma finish present			-51
verb lemma fit past			54
verb lemma fix past			60
verb lemma fre past			30
verb lemma get imperative		-41
verb lemma get modal		-16
verb lemma get owed		-76
verb lemma get past		-20
verb lemma glue copula			30
verb lemma glue past			54
verb lemma go copula		-88
verb lemma go imperative		-27
verb lemma go modal		-43
verb lemma go owed		-122
verb lemma go past			-92
verb lemma go present		-28
verb lemma grout past			45
verb lemma hang copula			48
verb lemma hang imperative		39
verb lemma hang past			34
verb lemma hold past			-61
verb lemma keep imperative		12
verb lemma leave imperative		-67
verb lemma leave past		-76
verb lemma look imperative		71
verb lemma look modal		35
verb lemma look owed		21
verb lemma make past			-47
verb lemma make present		-40
verb lemma measure past			68
verb lemma miss none		-58
verb lemma move modal		32
verb lemma move owed		24
verb lemma nail past			-19
verb lemma order imperative		24
verb lemma owe present		18
verb lemma pack past			43
verb lemma paint copula			14
verb lemma paint modal		51
verb lemma paint past			17
verb lemma pass past			40
verb lemma patch past			52
verb lemma pin past			-34
verb lemma plug past			-27
verb lemma pull past			26
verb lemma put imperative			35
verb lemma put modal		18
verb lemma put none		-29	-16
verb lemma put past		76
verb lemma replace imperative		46
verb lemma replace past			37
verb lemma roll past			21
verb lemma run copula			-42
verb lemma run imperative		42
verb lemma sand imperative		28
verb lemma sand modal		51
verb lemma sand owed		27
verb lemma screw past			-24
verb lemma seal past			30
verb lemma see imperative		-76
verb lemma send imperative		42
verb lemma set copula			45
verb lemma set none			71
verb lemma set past			32
verb lemma sister past			23
verb lemma snug past			23
verb lemma start imperative		-18
verb lemma start present		59
verb lemma swap imperative		43
verb lemma swap past			27
verb lemma take imperative		15
verb lemma take past			-14
verb lemma take present		36
verb lemma tape past			22
verb lemma tell past		-56
verb lemma test past			20
verb lemma tighten past			45
verb lemma top past			-17
verb lemma use past			-37
verb lemma walk present		16
verb main		29	27
verb main imperative		40	35
verb main modal		35	-18
verb main owed		32	42
verb main past		-32	26
verb main present		18	25
verb no rule		30	30
verb none		-26	-30
verb none of 0			-30
verb none of 1		-33	-28
verb none of 2		-28	-31
verb none of 3		-28	-24
verb none turn		-25	-25
verb nth 0		24	26
verb nth 0 of 1		29	29
verb nth 0 of 2			17
verb nth 0 of 3		38	30
verb nth 0 of 4		38	72
verb nth 1 of 3			-42
verb nth 1 of 4		-19	-31
verb nth 2			-13
verb nth 2 of 4		14	-16
verb nth 3		-27	-29
verb nth 3 of 4		-27	-29
verb of rule		16	34
verb of rule come		-51
verb of rule finish			-37
verb of rule install		-34	16
verb of rule send		60
verb other rule		-23	-31
verb same rule		45	33
verb says add		54
verb says ask		15
verb says bolt			13
verb says book		-57
verb says box		20	12
verb says bring		23
verb says buy		-39
verb says call		37
verb says cap			50
verb says caulk		28	43
verb says change		61	41
verb says check		82	19
verb says clean			51
verb says close		16	26
verb says complete			-33
verb says cut		24	18
verb says cut in			54
verb says cut out			-62
verb says dig			-23
verb says do		-80
verb says drill			-13
verb says dry		-49	-76
verb says file		26
verb says fill		39	59
verb says finish		50	-21
verb says fit		57	16
verb says fix		34	66
verb says flush		32
verb says fre			30
verb says get		-71
verb says give			-26
verb says glue		34	56
verb says go		-46	-68
verb says go back		-29
verb says go down		-76
verb says go in		-81
verb says go on		-46
verb says go up		-60
verb says grout		58	47
verb says hang		25	46
verb says hold			-61
verb says install			47
verb says keep		-20
verb says land		-14
verb says lay			54
verb says leave		-80	-21
verb says level			-64
verb says look		81
verb says make		-33	-31
verb says measure		13	67
verb says miss		-58
verb says mount			21
verb says move		43
verb says nail			-19
verb says open		-55
verb says owe		14
verb says pack			43
verb says paint		73	23
verb says pass			33
verb says patch		44	53
verb says pick		41
verb says pick up		42
verb says pin			-19
verb says plane		37
verb says plug			-20
verb says plumb			-34
verb says pour			-33
verb says prime		29
verb says pull		-20	17
verb says put		16	32
verb says put in		-119	-54
verb says redo		78
verb says replace		55	39
verb says reset			82
verb says return		51
verb says rip		23
verb says roll		12	-21
verb says run			-13
verb says sand		23	51
verb says scrape		30	35
verb says screw			-45
verb says scribe		38	43
verb says seal		54	38
verb says see		-39
verb says send		50
verb says set			60
verb says show up		-30
verb says shut			55
verb says sister			76
verb says sit		-66
verb says skim		82
verb says snug			22
verb says spray			31
verb says start		38
verb says stop		-15
verb says strip		35
verb says swap		66	49
verb says swing		-43
verb says take		-40	-62
verb says tape			29
verb says tell		-34
verb says test		49	62
verb says tighten			37
verb says top		-30	-62
verb says trim		19
verb says use			-35
verb says walk		17
verb says wire			43
verb says work			-43
verb says wrap			18
verb side			14
verb side copula			32
verb side imperative		13	-24
verb side none		19
verb side past		26	-16
verb side present		-15	-15
verb term defect		-54	-74
verb term finish			-35
verb term material		44	60
verb term part		52
verb term surface		41
verb term tool		45
verb turn back copula		32	-46
verb turn back modal		17
verb turn back none			-52
verb turn back owed		-47
verb turn back past		17	-44
verb turn come back			-61
verb turn done copula			-37
verb turn done none			-64
verb turn down copula			40
verb turn down none			-14
verb turn finish			-57
verb turn in copula		-71
verb turn in none		31	23
verb turn in present		68
verb turn install		32	17
verb turn new copula		18	-87
verb turn new imperative		70
verb turn new modal		13
verb turn new none		33	115
verb turn new owed		-43
verb turn new past		55	79
verb turn new present		-80
verb turn off copula		-29	-44
verb turn off none		27
verb turn on copula		44	38
verb turn on none		33	-34
verb turn on present		52
verb turn out copula			-51
verb turn over none		-12
verb turn replace		-13	66
verb turn take back		29	-50
verb turn take off		36	-65
verb turn take out			-62
verb turn up copula		-15	43
verb turn up none			79
verb turn up present		-27
verb use measure main		-15	-57
verb use measure side		-30	-56
verb use move main		-71	-39
verb use move side		-65	-51
verb use other main		-20
verb use other side		-29	-19
verb use return main		49
verb use say main		21
verb use say side		42
verb use see main		46	31
verb use see side		71
verb use use main			-37
verb use work main		57	33
verb use work side		29	24
where +1	-19	-14	-18
where -1	14	19	13
where -4		-14	-13
where here-after		13
where here-before	20	15	19
whole after at defect	27
whole after by defect	-18
whole after from defect	34
whole after on defect	-24
whole after quantity defect	-23
whole after quantity material	25
whole after quantity part	-52
whole after quantity word	19
whole after term defect	-20
whole after term finish	-22
whole after term material	36
whole after term part	34
whole after term size	-45
whole after term surface	48
whole after term word	54
whole after word area	29
whole after word defect	-18
whole after word material	39
whole after word part	27
whole after word surface	19
whole after word word	-16
whole article a		28
whole article none		-13
whole article other			-12
whole article the	12	18	14
whole behind about -3	-32
whole behind at +1	-30
whole behind at -1	-22
whole behind at -2	-35
whole behind at -3	-54
whole behind at -4	-27
whole behind at here-after	13
whole behind at here-before	31
whole behind behind -1	32
whole behind behind -2	-25
whole behind behind -3	-25
whole behind behind -4	-18
whole behind behind here-after	-38
whole behind behind here-before	15
whole behind by +1	-38
whole behind by -1	40
whole behind by -3	-22
whole behind by -4	29
whole behind by here-after	-17
whole behind down here-before	-15
whole behind end -1	-22
whole behind end -2	-19
whole behind end -4	-18
whole behind end here-before	19
whole behind for -1	77
whole behind for -3	28
whole behind from +1	-15
whole behind from -1	-26
whole behind from -2	-47
whole behind from -3	47
whole behind from -4	40
whole behind from here-before	47
whole behind in -1	-40
whole behind in -2	-16
whole behind in -3	-24
whole behind in -4	-26
whole behind in here-before	27
whole behind mark -1	-70
whole behind mark -2	16
whole behind mark here-before	41
whole behind number +1	-17
whole behind number -1	63
whole behind number -3	-26
whole behind off +1	-13
whole behind off -1	34
whole behind off -2	-21
whole behind off -4	48
whole behind off here-before	-28
whole behind on +1	-18
whole behind on -1	-25
whole behind on -3	34
whole behind out +1	44
whole behind out -2	-20
whole behind out -3	34
whole behind out -4	-12
whole behind quantity +1	-25
whole behind quantity -1	40
whole behind quantity -3	-32
whole behind quantity here-after	14
whole behind quantity here-before	20
whole behind term +1	-16
whole behind term -1	-24
whole behind term -3	17
whole behind term -4	-17
whole behind term here-after	24
whole behind to -1	41
whole behind to here-after	17
whole behind to here-before	17
whole behind up -1	25
whole behind up -2	46
whole behind up -3	-27
whole behind up -4	-17
whole behind with +1	-14
whole behind with -2	-33
whole behind with -4	-13
whole behind with here-after	-20
whole behind word -1	13
whole behind word -2	19
whole behind word -4	-15
whole behind word here-before	12
whole between get a	22
whole between has	46
whole between has a	-13
whole between is	-20
whole between still	-12
whole counted bare	16
whole counted length		-31	-27
whole counted pack		-16	-38
whole counted pressure	-27
whole does ask area		-34
whole does ask defect		-12
whole does ask fixture		-36
whole does ask material		25
whole does ask part		-33
whole does ask word		20
whole does be area		-15	-16
whole does be defect		-29
whole does be finish			-19
whole does be fixture			-24
whole does be material		39	-28
whole does be part		17	-33
whole does be size		-17
whole does be surface		34
whole does be tells			-35
whole does be tool		-14
whole does be verbish		27	-17
whole does bring fixture		-12
whole does bring part		-15
whole does bring word		67
whole does call defect		-16
whole does call material		15
whole does call part		-15
whole does call surface		28
whole does change area			-28
whole does change word		84	24
whole does clean part			-14
whole does come defect		-14
whole does come fixture		32
whole does come material		31
whole does come part		50
whole does come verbish		23
whole does come word		-16
whole does cut area			-31
whole does cut fixture		21	52
whole does cut material		60
whole does cut part			78
whole does cut surface			32
whole does cut word		-33	44
whole does do defect		-22
whole does do fixture		54
whole does do material		-76
whole does do part		56
whole does do surface		17
whole does do word		27
whole does finish area			15
whole does finish material			71
whole does finish surface			57
whole does finish word			-15
whole does fre word			32
whole does get area			-21
whole does get fixture		39	-30
whole does get material		45	-74
whole does get part		90	35
whole does get surface		-41	44
whole does get tool		-19
whole does get verbish		-24	-26
whole does get word		-66	-29
whole does glue material			17
whole does glue surface			39
whole does glue word			-32
whole does go fixture		-14
whole does go material		42	65
whole does go part		-33
whole does go surface		-47	78
whole does go verbish		-16
whole does go word		-18	-34
whole does hang fixture			-33
whole does hang material			31
whole does hang part			-29
whole does hang surface			-30
whole does hang word		-13	-23
whole does have word		26	-31
whole does i'll word		-49
whole does leave material		68
whole does leave part		-17
whole does leave word		-35
whole does let material		23
whole does let word		-45
whole does look defect		-31
whole does look word		-25
whole does move fixture		-12
whole does move material		-12
whole does need area		-43
whole does need defect		32
whole does need fixture		51
whole does need material		-35
whole does need part		43
whole does need size		18
whole does need verbish		-60
whole does need word		26
whole does open word		-29
whole does pick word		-14
whole does pull area			-37
whole does pull material		13
whole does pull part			21
whole does pull surface			-45
whole does pull word			-34
whole does put area			-42
whole does put defect			-44
whole does put fixture			20
whole does put material		22	36
whole does put part		-21	72
whole does put surface		-43	-59
whole does put verbish		-12
whole does put word		-62	-26
whole does replace material			-15
whole does replace part			44
whole does run material		28	-59
whole does run part			-17
whole does run word			-43
whole does sand defect		-36
whole does sand fixture		32
whole does sand material		-36
whole does sand word		-19
whole does say defect		-14
whole does say material		-14
whole does say surface		-41
whole does seal word			-27
whole does see part		36
whole does see word		55
whole does send word		-37
whole does set material		17	42
whole does set word		-29	-36
whole does swap defect			-29
whole does swap material		45
whole does swap part		63	-22
whole does swap word		-18	-38
whole does take defect		-22	-50
whole does take fixture		15
whole does take material		23
whole does take word		50	-24
whole does tape word			24
whole does tell material		-50
whole does test word			38
whole does wait material		16
whole does want defect		-27
whole does want fixture		52
whole does want part		-45
whole does want surface		-52
whole does want verbish		40
whole does want word		27
whole ends PREP	-17	44
whole ends Vmeasurei		23
whole ends Vmoveb		28	-22
whole ends Vmovep	-13
whole ends Vmoves	-19	-25
whole ends Vneedb	-26	-45
whole ends Vneeds	34	-21	-25
whole ends Votherb	-34
whole ends Votheri		-37
whole ends Vsayb	-17
whole ends Vworkb			-18
whole ends Vworkbp	24	15	27
whole ends Vworkbpp	-21	-24
whole ends Vworki	20		-15
whole ends Vworks		46	38
whole ends tarea	14	14	-12
whole ends tarea's	-18		13
whole ends tdefect	-13
whole ends tdefectVotherb	-23	-16	81
whole ends tdefectVotheri		-32	-22
whole ends tdefectVotherp	-29
whole ends tdefectVotherpp	-13	-20	-34
whole ends tdefectVothers	-20	-26	37
whole ends tdefectVworkbpp		39	-19
whole ends tdefectVworki		-21	-16
whole ends tdefectVworkp		-39	-17
whole ends tdefectVworkpp		-16	-28
whole ends tdefectVworks	-15	43	-16
whole ends tfinish	-16	-22
whole ends tfinishVworkb	-15	34
whole ends tfixture	16	18	16
whole ends tfixtureVworkb	-20		-27
whole ends tfixtureVworks	-23
whole ends tmaterial			23
whole ends tmaterial's		67	-16
whole ends tmaterialVworkb			-12
whole ends tmaterialVworki		55	-37
whole ends tmaterialVworks		-20	-17
whole ends tpart		12
whole ends tpart's		16	34
whole ends tpartVotherb	-25
whole ends tpartVothers	47	-34
whole ends tpartVworkb	-13		26
whole ends tpartVworks	27		-21
whole ends tsurface		17	17
whole ends tsurface's			-22
whole ends tsurfaceVotherb		-15
whole ends tsurfaceVworkb		-19
whole ends tsurfaceVworki		22	-32
whole ends tsurfaceVworks	-30	-19	13
whole ends ttool			-12
whole ends ttoolVworkb	15	-15
whole ends ttoolVworks	-15
whole ends twork	-19	36
whole ends w		-12
whole ends w's	-20	-39
whole ends wed		-16	-30
whole ends wing	-44		-21
whole far after 0			23
whole far after 1	30	45
whole far after 13+		-26
whole far after 2	-24
whole far after 3-4	-12	-12
whole far after 5-7			-14
whole far after 8-12	-15		-23
whole far before 1		-18
whole far before 13+	-13
whole far before 2	20		-15
whole far before 5-7			27
whole far before 8-12		15
whole figure-between	47
whole flawed		20	33
whole frame copula +1		-14	-17
whole frame copula -1		12	-35
whole frame copula -2		15	-20
whole frame copula -3		-24	-21
whole frame copula -4	-19	-34
whole frame copula area		22
whole frame copula defect		-31	-13
whole frame copula finish		-57	-32
whole frame copula fixture		28	-12
whole frame copula here-after	-16		16
whole frame copula here-before		22	36
whole frame copula material		-15	-13
whole frame copula part			-15
whole frame copula size		-24
whole frame copula surface		42
whole frame copula tells			-36
whole frame copula tool		-46	-12
whole frame copula word		-19
whole frame copula work			-21
whole frame imperative +1	43	-23	-14
whole frame imperative -1			84
whole frame imperative -2	-12	-15	-62
whole frame imperative -3		-20
whole frame imperative -4	-41		59
whole frame imperative defect			-16
whole frame imperative finish		-24
whole frame imperative fixture			90
whole frame imperative here-after	28	26
whole frame imperative here-before		13
whole frame imperative material			-36
whole frame imperative size		18
whole frame imperative surface			26
whole frame imperative tells		45
whole frame imperative tool		-41
whole frame imperative verbish		-19	-20
whole frame imperative word		-17
whole frame modal +1	-43	-22
whole frame modal -1		19
whole frame modal -2	24
whole frame modal -3	72	15
whole frame modal -4		-16
whole frame modal finish		-38
whole frame modal fixture		31
whole frame modal here-after	47	-16
whole frame modal material		12
whole frame modal size		-20
whole frame modal surface		13
whole frame modal verbish		-15
whole frame modal word		-17	-31
whole frame none +1	-21
whole frame none -1	13	29	41
whole frame none -2		12	21
whole frame none -3	13	30	-25
whole frame none -4		-25	-21
whole frame none area		-25
whole frame none finish		57	49
whole frame none fixture		-27
whole frame none here-after		-14	30
whole frame none here-before	12
whole frame none material		15	18
whole frame none part		39
whole frame none size		-29	15
whole frame none surface		27	31
whole frame none tells		-37
whole frame none tool		45
whole frame none work		-36	27
whole frame owed -1	23
whole frame owed -2	-53	16
whole frame owed -3		35
whole frame owed area		61
whole frame owed defect		-16
whole frame owed finish		-15
whole frame owed fixture		22
whole frame owed here-after		38
whole frame owed here-before	46	41
whole frame owed part		48
whole frame owed size		25
whole frame owed tells		33
whole frame owed tool		27
whole frame past +1		-47	-17
whole frame past -1			20
whole frame past -2		39	12
whole frame past -3	-24	-34
whole frame past -4		-36	-24
whole frame past area			-29
whole frame past finish		29	-52
whole frame past fixture		51	28
whole frame past here-after	38	30
whole frame past here-before	29	44
whole frame past material		53	18
whole frame past part			21
whole frame past size		-36
whole frame past surface		-38
whole frame past tells			25
whole frame past tool		-31
whole frame past verbish		-28	-31
whole frame past word		-58
whole frame present +1	-26	37	-21
whole frame present -1	-16	-12	39
whole frame present -3		-22	19
whole frame present -4	-12
whole frame present defect			38
whole frame present finish			31
whole frame present fixture			21
whole frame present here-after		29
whole frame present here-before	21
whole frame present material		18	27
whole frame present part			18
whole frame present size			15
whole frame present surface		-12	-36
whole frame present tells		-28	27
whole frame present verbish			22
whole frame present word			-48
whole head air	15		37
whole head anybody		-27
whole head anything		-18
whole head attic	-35	-40	-16
whole head b	-18		40
whole head back door	-29
whole head backsplash		70	-14
whole head bad	-27	-42
whole head bag	-27
whole head bar	-28	-28	-40
whole head base	36	-13	54
whole head basement	53		-30
whole head bath	-33	16	-15
whole head bathroom	27	-33	25
whole head bay	29	-33	-46
whole head bed			19
whole head bedroom	26	-17	-30
whole head bifold	16
whole head bit	-17
whole head black		-38	-16
whole head blade	-25
whole head blinds	57		33
whole head blue tape	-16
whole head board			44
whole head boards		70	-13
whole head bolt	-19
whole head bolts	-18	-17	55
whole head bottom		-36	-25
whole head bowl	18
whole head box	17	31	23
whole head bracket	-14	-15	84
whole head brackets		-13
whole head breaker	-25	-38
whole head broken	-35
whole head button	-14
whole head c	-20
whole head cabinet	-17	99
whole head cabinets			-22
whole head cable			-69
whole head cap		12
whole head carpet		-43	-14
whole head caulk		58
whole head ceiling	92	61	-21
whole head chimney	-17
whole head chip	-55
whole head circuit	42
whole head clamps	-15
whole head clear	-15	34
whole head closer	-21
whole head closet	37	19
whole head closet rod	46
whole head co	21
whole head coat		-37	-34
whole head code		-23
whole head cold	-20		-19
whole head color	29
whole head corner		-20	-61
whole head corridor	22
whole head counter	27	99
whole head crack	-23		115
whole head cracked	-14
whole head crown's			19
whole head cut		-24
whole head cut out	-46
whole head damper	-45
whole head dead		-19
whole head deck	-25		60
whole head den	37
whole head dimmer	-46	45
whole head ding		-14
whole head dining room	60	44	-42
whole head dishwasher	-32
whole head disposal			98
whole head door	33	19	48
whole head door's	-43	35	17
whole head doors	38		20
whole head downspout	24
whole head drain	17		17
whole head drawer	13	13	24
whole head drip	29		-15
whole head drop	-18		33
whole head drops	-13	-36	-21
whole head dry	12	52
whole head drywall		-43
whole head duct	-16
whole head due		-38
whole head duplex	-27
whole head edge	-19	21	70
whole head end			-24
whole head end panel		-45
whole head entry			17
whole head epoxy		-64
whole head except	-20	-63	-17
whole head extra	-14
whole head face		12
whole head falls	-47
whole head fan	41	-65
whole head faucet		22	54
whole head filter	-23
whole head filters	21
whole head first	-12	33
whole head first coat	-26	30	52
whole head flange	48		-48
whole head flashing	18
whole head flat	-29	-22	-31
whole head flex	44
whole head floor	56	-26	57
whole head floor's	62	52
whole head foam	-15	-28	-40
whole head frame	41		-31
whole head fridge	42	-38	32
whole head front		-14	51
whole head front door	50
whole head full	-26	-25
whole head furnace	-27
whole head gap		-15
whole head garage	-44	-34	55
whole head gary	-20
whole head gasket	-17	33	-63
whole head glass		47
whole head glue			-80
whole head go	-22
whole head goes	-18
whole head grease	-14
whole head grout		30
whole head hair	-16		-12
whole head hall	17	50
whole head hall bath			-16
whole head hallway	-15
whole head hand	-16
whole head handle	-23	-55	29
whole head handrail	24
whole head hard			-20
whole head hatch	55
whole head head	31
whole head height			-43
whole head hinge		-35	49
whole head hinges	36	14	-19
whole head hole	20	36
whole head holes	59	34	31
whole head hollow		-19
whole head hood	16
whole head hose	23	14
whole head hose bib		-71
whole head hot	26	20
whole head hot side	-13
whole head house		-27
whole head inside	-17	44
whole head itself	-15
whole head job		39	-16
whole head joint	64		73
whole head joist	39	-40	-32
whole head joists		-54
whole head kit	-12	-16
whole head kitchen	-27	38	-48
whole head kitchen faucet	-62
whole head ladder		30
whole head landing	-20
whole head latch	-22		18
whole head laundry	55
whole head layers	-53
whole head leak			-32
whole head leaking			18
whole head leaning		-38
whole head leg	-17
whole head legs			-41
whole head let go	-35
whole head lid		23	52
whole head light	33	-39	-63
whole head line	-12	-29	29
whole head lip	-21
whole head living room	-17	-23
whole head lock	-30	-37
whole head loose			-15
whole head luis	-14
whole head make		-13
whole head me		-16
whole head meter		-50
whole head middle		-19
whole head mirror			15
whole head missing		-23	-23
whole head miter	-15
whole head mud	-15	70
whole head nail	17
whole head needs	-19
whole head nice	-19
whole head niche	-20
whole head nosing		-36
whole head number		74	-44
whole head nut	-14
whole head oak		45
whole head office	-20
whole head opening	27
whole head outlet	78	32	80
whole head outlets	42
whole head outside	-29
whole head paint		-67
whole head pan	-43		20
whole head panel			-20
whole head pantry	-20
whole head paper	-18	-31
whole head piece		22
whole head pipe		57
whole head place			-32
whole head plate	-41	-64	13
whole head plates	16	15
whole head pocket door	24
whole head poly		74
whole head post	34	37
whole head primer			-54
whole head pull		28
whole head pulls	53	42
whole head pump	40	-26
whole head punch	-36
whole head putty		-46
whole head quiet	-19
whole head r	-13
whole head rack	-34
whole head rail		-27	45
whole head rain	-15	-29	-13
whole head range	-24
whole head reveal	-27		-13
whole head rick		-15
whole head ring	-34
whole head rm	136
whole head rock	-26	-14
whole head rod	-17
whole head roof	100		111
whole head room		-15
whole head round	-18	23	-42
whole head row	-14
whole head run	24	15	27
whole head runs	-15	50	-18
whole head salon	-49		-43
whole head sand	-13	-82
whole head screen	-16
whole head screw		-18	-80
whole head screws	18	-12	-53
whole head seam		-21
whole head second coat	-37	-67	65
whole head sheet	57
whole head shelf	-18	48	26
whole head shop	-58	-17
whole head shot	-27
whole head shower	-38		50
whole head side	-32	-23	-42
whole head sides	-22	-21
whole head siding		96
whole head silicone			22
whole head sill		64
whole head sink	-13	14	32
whole head skirting	-19
whole head slab	48	96	24
whole head slider	38
whole head slope	-21
whole head smoke	94
whole head soffit	62
whole head soft	-19	40
whole head sorry	-17
whole head split		39	-19
whole head spot	-70	52
whole head stain	-61
whole head stair	-24
whole head stairs	-27	-52	-45
whole head steps	18	45
whole head stone		-54
whole head store	21
whole head straight	-17
whole head strike	-38	31	40
whole head stripped			-12
whole head studs	-19
whole head supposed	-15	25
whole head sweep	-21
whole head switch	69
whole head t	81
whole head tank	-34
whole head tap	-12
whole head tape	12	26	28
whole head temp	-16
whole head template		35
whole head tile	20	46	37
whole head tiles	29	18	42
whole head toilet			31
whole head too long	-18
whole head top	17	-16	-19
whole head track	-40
whole head trap	19	-14	62
whole head tray		77
whole head tread		31
whole head treads	-26		-20
whole head trim	86	-33	34
whole head truck	15	38
whole head tub	96	-60	19
whole head unit	-43		12
whole head uppers		-25	-50
whole head upstairs	20	20	19
whole head valve	-35	-70	-17
whole head van		-17
whole head vanity			-44
whole head vent	33	29
whole head wall		16	-46
whole head wall bend			-28
whole head wall's	22	-17	-20
whole head walls	-23	-36	-22
whole head wants	52	-29
whole head washer			-32
whole head water		-40	-115
whole head water's	-23
whole head wax ring	-52
whole head weatherstrip	-19
whole head weeping		-19
whole head wet	19	-31
whole head white		-28
whole head whoever	-17
whole head window	60	-35	35
whole head wire	16	62	85
whole head wood			-24
whole head wrong	-15
whole heading +1			-30
whole heading -1	34	-16	30
whole heading -2	-29	25	-22
whole heading -3	15		15
whole heading -4		22
whole heading here-after	28		43
whole kind +1 area	-20
whole kind +1 defect			-19
whole kind +1 finish	-12
whole kind +1 fixture		-16
whole kind +1 material	-13	-24	-15
whole kind +1 part			-15
whole kind +1 size		-17	-18
whole kind +1 surface	-15		-17
whole kind +1 tells	-26		-23
whole kind +1 tool		-29
whole kind -1 area	22
whole kind -1 defect	-28
whole kind -1 finish	-30	30	-21
whole kind -1 fixture	34	62	51
whole kind -1 material			30
whole kind -1 part	17	40	52
whole kind -1 size	-80	16	15
whole kind -1 surface		-22
whole kind -1 tells	14	-21	70
whole kind -1 tool	31	-37	-15
whole kind -1 verbish		36	-21
whole kind -1 word			-14
whole kind -2 area		19	-27
whole kind -2 defect	-20
whole kind -2 finish		-36	44
whole kind -2 fixture	18	44	-14
whole kind -2 material	-17	13
whole kind -2 size	36	-35	59
whole kind -2 surface			24
whole kind -2 tells	-26	53	-30
whole kind -2 tool		-13
whole kind -2 verbish		-21	-17
whole kind -2 work	-13
whole kind -3 area	40		-44
whole kind -3 defect	-15	-35	-18
whole kind -3 finish	-17	29	-18
whole kind -3 fixture	22	-13	21
whole kind -3 material		23
whole kind -3 part			19
whole kind -3 size	-34	16	-50
whole kind -3 surface	13	14
whole kind -3 tells		-33
whole kind -3 tool	-25	26
whole kind -3 word	-12		-14
whole kind -3 work	-16
whole kind -4 finish		-28	-24
whole kind -4 fixture	-20	-25
whole kind -4 material			-16
whole kind -4 part			-15
whole kind -4 size	-16	-30
whole kind -4 surface		14	-12
whole kind -4 tool		-22	-12
whole kind -4 word		-14	-15
whole kind -4 work		-33
whole kind area	14
whole kind defect	-15
whole kind finish	-16
whole kind fixture	13	13	13
whole kind here-after area		-40	20
whole kind here-after defect	-15	24
whole kind here-after finish	-25
whole kind here-after fixture	13	15	15
whole kind here-after material	44	53
whole kind here-after part	35	69
whole kind here-after surface	17	49	59
whole kind here-after tool		53
whole kind here-after verbish	-17	-42	-13
whole kind here-after word		-40
whole kind here-before area			31
whole kind here-before defect	51
whole kind here-before finish	14
whole kind here-before fixture		17	15
whole kind here-before material	23	15	36
whole kind here-before part		43	30
whole kind here-before size	68		-14
whole kind here-before surface	14	66
whole kind here-before tells	-17
whole kind here-before tool		50
whole kind here-before verbish	-39	-55
whole kind tells	-12	14
whole kind word		-13
whole kind work	-22	36
whole lead a -1	33
whole lead a -2	-35
whole lead a -3	-29
whole lead a here-before	-20
whole lead area -1	-40
whole lead area -3	38
whole lead area here-before	25
whole lead fixture -2	-30
whole lead fixture -4	-37
whole lead fixture here-before	28
whole lead material -1	-34
whole lead material -2	-25
whole lead material -3	-17
whole lead material -4	-27
whole lead material here-before	14
whole lead number -1	17
whole lead number -3	67
whole lead number here-before	30
whole lead part -1	-16
whole lead part -2	-20
whole lead part -3	-34
whole lead part -4	-19
whole lead quantity -1	31
whole lead quantity -2	-14
whole lead quantity -3	15
whole lead quantity -4	-24
whole lead quantity here-after	22
whole lead quantity here-before	46
whole lead size -1	-31
whole lead size here-before	32
whole lead surface -2	-16
whole lead surface here-after	-16
whole lead surface here-before	16
whole lead that -2	-24
whole lead the -1	-57
whole lead the -2	-23
whole lead the -4	-22
whole lead the here-after	-18
whole lead the here-before	-21
whole lead tool -2	-23
whole lead tool here-before	51
whole lead verbish -1	-23
whole lead verbish here-after	-37
whole lead with -4	-13
whole lead with here-before	32
whole lead word -3	25
whole lead word -4	-25
whole lead word here-after	21
whole lemma be object	-18
whole lemma drip subject	41
whole lemma find object	35
whole lemma get object	-44
whole lemma get subject	-41
whole lemma go subject	-17
whole lemma have subject	37
whole lemma have subject-late	23
whole lemma leave object	26
whole lemma run subject	-18
whole number many many		45	21
whole number many one		-49	-18
whole number one many			-21
whole number one one		18	24
whole opens PREP	-13	-33	-25
whole opens Vmoveb			14
whole opens Vmovep	-32
whole opens Vmovepp	-15	-15
whole opens Vmoves		-25
whole opens Votherb	-30	-27	16
whole opens Vworkb	-17	-19	-17
whole opens Vworki	19	-13	12
whole opens Vworkpp	-29	-15	-19
whole opens Vworks		27	48
whole opens tarea	17
whole opens tarea's	-20		15
whole opens tdefect	-17	-14	-16
whole opens tdefectVotherb	-33	-13	70
whole opens tdefectVotheri		-40	-17
whole opens tdefectVotherp	-30	-23
whole opens tdefectVotherpp	-13	-20	-34
whole opens tdefectVothers	-20	-26	45
whole opens tdefectVworkbpp		20
whole opens tdefectVworki	-13	-21	-16
whole opens tdefectVworkpp		-16	-29
whole opens tdefectVworks	-15	34	-21
whole opens tfinish	-15		-36
whole opens tfinishVworkb		26	-21
whole opens tfinishVworkpp		-19
whole opens tfixture	15		33
whole opens tfixture's	18		32
whole opens tfixtureVworkb	-21	-30	14
whole opens tfixtureVworks	-16
whole opens tmaterial		24
whole opens tmaterial's	13	38
whole opens tmaterialVotherb	-12
whole opens tmaterialVworkb		38
whole opens tmaterialVworki		40	-37
whole opens tmaterialVworks	16		-30
whole opens tpart	14	16	36
whole opens tpart's		32	38
whole opens tpartVotherb	-22	-26	-28
whole opens tpartVworkb	-14		38
whole opens trole	-31	12	-12
whole opens trole's	-42	-14
whole opens tsurface's		14	-20
whole opens tsurfaceVotherb		-34	-16
whole opens tsurfaceVworkb		-14	-18
whole opens tsurfaceVworki		-14	-17
whole opens tsurfaceVworks	-22	30	14
whole opens ttool			-24
whole opens ttool's		-31
whole opens ttoolVworkb	13
whole opens ttoolVworks	-13	15
whole opens twork	-20
whole opens w		-14	-18
whole opens w's	-29	-39
whole opens wed		-22	14
whole opens wing		-25	-35
whole opens-with -1	44
whole opens-with -2	26
whole opens-with here-after	23
whole part +1 bare			-15
whole part +1 object	-16
whole part +1 opens	-21
whole part +1 subject		-26	-18
whole part +1 subject-late		-23	-29
whole part -1 bare	-14
whole part -1 object			-16
whole part -1 opens	22	17	23
whole part -1 subject		31	39
whole part -1 subject-late	-34
whole part -2 bare			-26
whole part -2 subject		24	31
whole part -2 subject-late			13
whole part -3 bare	-16		-16
whole part -3 object			-19
whole part -3 subject-late	34	16	30
whole part -4 bare	-16	-18	-24
whole part -4 object	-14	-16
whole part -4 opens		20
whole part -4 subject			-24
whole part -4 subject-late		-16
whole part bare			-15
whole part bare area	16		-13
whole part bare defect	-17	-18	-46
whole part bare fixture	-31	-29	-25
whole part bare material		-28
whole part bare part	20	45
whole part bare size		27	76
whole part bare surface	-20		-26
whole part bare tells	33		24
whole part bare tool		-26
whole part bare verbish	-19
whole part here-after bare	-14		23
whole part here-after object		26
whole part here-after opens	32		26
whole part here-after subject	-29	32	38
whole part here-after subject-late	-12	-35
whole part here-before object	-21	45	-54
whole part here-before opens	15	15
whole part here-before subject	16	21	30
whole part here-before subject-late			17
whole part object			-16
whole part object area	24
whole part object defect	-14
whole part object finish	-17	-16
whole part object part		15	17
whole part object size		24	-16
whole part object surface			-26
whole part object tells	-26	29
whole part object tool			-16
whole part object verbish		-21	-13
whole part object word	-14		-20
whole part object work	-16
whole part opens area		76	-21
whole part opens defect		17
whole part opens finish			14
whole part opens fixture	38	43	40
whole part opens material			28
whole part opens size	-16	-62	-25
whole part opens surface		30	49
whole part opens tells	-20
whole part opens tool	13		-20
whole part opens verbish	-19	41	-24
whole part opens word		-19
whole part opens work		59
whole part subject		14	20
whole part subject area	23	-16
whole part subject defect	-18	-60	19
whole part subject finish	-18
whole part subject fixture		21
whole part subject material		31
whole part subject size		-23
whole part subject surface		18	52
whole part subject tells		-21
whole part subject tool	20	-13
whole part subject verbish			16
whole part subject word			19
whole part subject work	-27	-36
whole part subject-late area		-25	-22
whole part subject-late defect		-22	29
whole part subject-late finish			24
whole part subject-late fixture	23		42
whole part subject-late material		27	14
whole part subject-late part	-34	23
whole part subject-late surface	25	-15	-25
whole part subject-late tool	-13
whole part subject-late verbish	-19	32	-19
whole part subject-late word		-23
whole person	-36
whole points both -1			17
whole points both opens			49
whole points both subject			-42
whole points em -1			16
whole points em -2			-31
whole points em -3			-33
whole points em -4		-28	47
whole points em object		-19	-21
whole points em opens			34
whole points em subject			26
whole points it +1		-34	-19
whole points it -1		18	27
whole points it -2		16	15
whole points it -4		-14
whole points it bare			-24
whole points it here-after		-34	-45
whole points it here-before		-16	16
whole points it object		-16	-25
whole points it opens		43
whole points it subject			50
whole points it subject-late		-12	19
whole points none +1			-15
whole points none -1			13
whole points none -3			-12
whole points none -4		-16	-25
whole points none here-after		21	24
whole points none here-before		48	33
whole points none object			-17
whole points none subject		15	14
whole points one +1		-23	-30
whole points one -1		37	13
whole points one -2		-17	57
whole points one -3		35
whole points one -4			27
whole points one bare		-14	-13
whole points one here-after		-37
whole points one here-before		34	-58
whole points one opens		41	-92
whole points one subject		22	39
whole points one subject-late			129
whole points that +1		-25	-21
whole points that -1		33	-22
whole points that -2		20	25
whole points that -3		16
whole points that bare		-38	-103
whole points that here-after		-14	-18
whole points that here-before		16	44
whole points that object			19
whole points that opens			-31
whole points that subject		35	47
whole points them -1		19	87
whole points them -2		-50
whole points them -3		-16	-24
whole points them -4			-36
whole points them bare		-33
whole points them object		-13	18
whole points them opens		-24
whole points them subject		23	-56
whole points they -1		30
whole points they -2		26
whole points they -3		-67
whole points they bare		42
whole points they object		-21	44
whole points they subject-late		18
whole points this object		74
whole points those +1		33
whole points those -1		55
whole points those -2		-22
whole points those -3		-23
whole points those bare		38
whole points those opens		-50
whole points those subject		-58
whole points those subject-late		45
whole prep above	-23
whole prep after	-22	-54
whole prep along	-20	-34	-16
whole prep around	-14		-35
whole prep at	-17	-25	-32
whole prep before	-19		17
whole prep behind	56	55
whole prep below			-23
whole prep between		17	-55
whole prep by	-19	-61	-65
whole prep down	-16		-31
whole prep for	-23
whole prep from	-40	-34	-42
whole prep here-after at	-23
whole prep here-after from	-73
whole prep here-after in	-17	-79	-40
whole prep here-after of	-14	52	27
whole prep here-after on	57	24	-17
whole prep here-after to		-21
whole prep here-after with		34	-35
whole prep here-before at	-12
whole prep here-before behind	34
whole prep here-before in			-17
whole prep here-before of	17
whole prep here-before on	-23
whole prep in		-35
whole prep into			-61
whole prep near		-48
whole prep of	-19
whole prep off	15	-31	-29
whole prep other above	-24
whole prep other after	-18
whole prep other along	-22	-21
whole prep other around	-15
whole prep other at	-16	-24	-30
whole prep other before	-19		17
whole prep other behind	36	26
whole prep other below			-23
whole prep other between		14
whole prep other by	-26	-63	-67
whole prep other down	-16		-32
whole prep other for	-22	28
whole prep other from	-24	-38	-36
whole prep other in		-30
whole prep other into			-61
whole prep other near		-49
whole prep other of	-23	-13	-13
whole prep other off		-30	18
whole prep other on		-14
whole prep other over	-19	-35	-23
whole prep other to	-21		-28
whole prep other toward	-36
whole prep other under	-30	-38	-30
whole prep other up	-27	-36	31
whole prep other with	-13	-46	-30
whole prep other without		-33
whole prep out	-12		14
whole prep over		-35	-23
whole prep through	50
whole prep to	-22		-21
whole prep toward	-42
whole prep under	-14	-38	-33
whole prep up		-30	31
whole prep with	-15	-35	-36
whole prep without		-33
whole rank after 2	-15		-16
whole rank after 3			-15
whole rank after 4	-21
whole rank before 0	12
whole rank before 4		-18	-47
whole says imperative			20
whole says modal		-23	-29
whole says owed		12
whole sentences -1	-43	-35	-34
whole sentences -1 bare	-23	-21	-16
whole sentences -1 object	-23	-38	-19
whole sentences -1 opens	-30	-38	-41
whole sentences -1 subject	-18
whole sentences -1 subject-late	-16	-14	-70
whole sentences -2	-31	-43	-43
whole sentences -2 bare			-19
whole sentences -2 object	-19	-18	-23
whole sentences -2 opens	-28	-66	-39
whole sentences -2 subject	-25	-32	-38
whole sentences -2 subject-late			-16
whole sentences 1	-16	-29	-15
whole sentences 1 bare	-20	-15
whole sentences 1 object	-13	-13	-13
whole sentences 1 opens		-36	-18
whole sentences 1 subject	-13	-30
whole sentences 1 subject-late		-15	-17
whole sort PREP		25	-19
whole sort Vmeasurei		18	-23
whole sort Vmoveb		24
whole sort Vmovep	-21	-20
whole sort Vmovepp		-25
whole sort Vmoves	-15	-25
whole sort Vneedb	-26	-45
whole sort Vneeds	17	-25	-25
whole sort Votherb	-41
whole sort Votheri		-39
whole sort Vsayb	-17
whole sort Vworkb		-20
whole sort Vworkbp	24	15	27
whole sort Vworkbpp	-22		-35
whole sort Vworki			-15
whole sort Vworkpp	-28	-22
whole sort Vworks		46	38
whole sort w		-13	-19
whole sort w's	-30	-41	-17
whole sort wed		-18	14
whole sort wing		-16	-37
whole stands after	-12	-19	-19
whole stands after 0 of 0		-19	-19
whole stands after 0 of 1		-16	-16
whole stands after 0 of 2		-19	-14
whole stands after 0 of 3		-17
whole stands after 1 of 1	-14
whole stands after has 0		-20	-20
whole stands after has 1		-17	-20
whole stands after has 2	-13	-24	-17
whole stands after has 3		-19
whole stands after points it		-22	-28
whole stands after points it's	-17		-34
whole stands after points nothing		-18	-15
whole stands after points one		-17	-36
whole stands after points that		-16	-19
whole stands after points those		-13
whole stands before 0 of 2		-25
whole stands before 0 of 3		-34
whole stands before 1 of 0	-25		-15
whole stands before 1 of 2		20
whole stands before 1 of 3		32
whole stands before 2 of 0		-21	25
whole stands before 2 of 1		18
whole stands before 2 of 2	-13
whole stands before 2 of 3		23
whole stands before 3 of 0			-23
whole stands before 3 of 1			-14
whole stands before 3 of 2	-16		26
whole stands before 3 of 3		-18	27
whole stands before 4 of 0		-18	-47
whole stands before 4 of 2	-24
whole stands before 4 of 3	17
whole stands before has 0		-23	-29
whole stands before has 2	-19
whole stands before points both			-17
whole stands before points em		-13	-45
whole stands before points it			17
whole stands before points it's	68
whole stands before points one		36	15
whole stands before points ones			37
whole stands before points that		17	15
whole stands before points them		-62	15
whole stands before points they're		-51
whole stands before points this		46
whole stands here		28	23
whole stands here 0 of 2		35	27
whole stands here 0 of 3	33	36	46
whole stands here 1 of 2		17
whole stands here 1 of 3		-21	-16
whole stands here 2 of 3	-19		-35
whole stands here 4 of 3	-20
whole stands here has 2		33	26
whole stands here has 3	14	20	19
whole stands here points both			18
whole stands here points it		-13	22
whole stands here points it's		25
whole stands here points nothing		32	27
whole stands here points one		-16
whole stands here points that		17	22
whole stands here points that's		61	-22
whole stands here points them		98
whole stands here points they		58
whole stands here points those		-32
whole subject none +1	-12
whole subject none -1	13
whole subject none here-after	13
whole subject own +1	-13
whole subject own -1	-15
whole subject own -4	-17
whole subject own here-before	14
whole subject person -1	21
whole subject person -3	-33
whole subject person -4	-39
whole subject person here-after	-22
whole subject person here-before	27
whole subject pointer +1	-20
whole subject pointer -1	36
whole subject pointer here-after	13
whole subject tells -1	30
whole subject tells -2	-32
whole told as done after		-19
whole told as done here		47
whole told as fixed after		-32	-24
whole told as fixed before			26
whole told as fixed here			-49
whole told as have before	-39	20	-23
whole told as need after	-15	-16	-19
whole told as need before	-22	-57	-55
whole told as need here		15
whole told as open after		-32	-29
whole told as open before		30
whole told as open here			45
whole told as used before		-36	-43
whole told as used here	48		16
whole touches-after	24
whole unit none area	15
whole unit none defect	-15
whole unit none finish	-16
whole unit none fixture	13
whole unit none tells	-12
whole unit none work	-22
whole use buy	-18
whole use have		33	21
whole use measure	21	-22	-14
whole use move	-22		16
whole use need	-18
whole use other			15
whole use say			-14
whole use see	-29		-50
whole use use	-23	-42
whole where +1	-13		-17
whole where -1			16
whole where -3			-12
whole where -4	-15	-14	-16
whole where here-after			17
whole where here-before	13	28	21
whole word anybody		-28
whole word anything	-16	-18
whole word arm	-25
whole word b	-21	-19	23
whole word back	31
whole word bad	-28	-49	-15
whole word bag	-27
whole word bed			18
whole word bedroom	-41
whole word bench	26	63
whole word big		-51	-52
whole word board			38
whole word boards		70	-13
whole word bottom			17
whole word bowl	18		-33
whole word box	16	29	22
whole word br	-36
whole word button	-14
whole word c	-28	65	-23
whole word code		-23
whole word cold	-13		-19
whole word color	19	-36
whole word counter	24	138	23
whole word cut			-14
whole word defect	-16
whole word dining		16
whole word dry	12	49
whole word due		-38
whole word electric		17
whole word end			-25
whole word ends		-31
whole word except	-34	-65	-17
whole word extra	-15		-22
whole word face		-27
whole word finish	-15		-16
whole word first	67	85	-18
whole word front	-23	42	17
whole word full	-29	-47	-13
whole word go	-26
whole word god	23
whole word goes	-14
whole word gone		-20
whole word hair			-16
whole word hand	-19	32
whole word hanging	-22
whole word hard		-15
whole word head	15	39	19
whole word height			-43
whole word hot	23		40
whole word house	-31	-28	-18
whole word inside	-29	44
whole word instead	-15
whole word itself	-15
whole word job		39	-16
whole word kit	-12	-17
whole word last		-82	-39
whole word layers	-53
whole word left		-24
whole word lid	-22	-22	22
whole word little	-20	-28	-29
whole word longer	-22	13
whole word luis	-14
whole word make	35	-13
whole word me		-15
whole word n	-16		-55
whole word needs	-19
whole word nice	-22
whole word number	-17	18	39
whole word old		24
whole word other		24
whole word paper		-33	54
whole word piece		22
whole word place			-32
whole word problem		-19
whole word quantity	-24	-66	13
whole word quiet	-19
whole word r	-13
whole word rain	-15	-29	-13
whole word real	-33
whole word rear			-23
whole word rick		-15
whole word ring	-32	-16
whole word rm	101	-47	-74
whole word room		-13
whole word round	-26	-15	-42
whole word row	-14
whole word run	24	15	27
whole word same	-23		25
whole word second	-35	-49
whole word sheet	53
whole word sir	30
whole word slip	-23
whole word slow	33
whole word sorry	-18
whole word spot	-68
whole word store	21
whole word straight	-17
whole word suite	-20
whole word supposed	-15	25
whole word svc	-14
whole word t	77
whole word template		31
whole word top		-22	-17
whole word twice	-17
whole word unit	-28	-30	-22
whole word up		-13
whole word upper	-32
whole word wants	31	-33
whole word weight		-16
whole word whoever	-17
whole word wrong		-13
whole word zone	-45
word a		12	15
word again		22
word air	-50	-18	-45
word all			-32
word already			-40
word altogether	-17
word an		21
word and		20
word another		110
word anybody		-74
word anyhow	-30
word anything		-34
word are			15
word arm	-17
word around			-22
word arvo		-30
word at		-14	-21
word back	106	-12	-15
word bad	-14		19
word bag	-24	-40
word bath	38
word bed	-32	-13
word bedroom	-31
word behind			17
word bench	75	44
word better		-63
word big	-44	12	-60
word bled	-66	-15
word board	35	75	39
word boards	94		60
word bottom	-29	38	-14
word bowl	32
word box			16
word boxes	30
word boy	-34
word br	-33	-15
word c	-14	-20	-36
word cab	-27
word case	14		-17
word center	-22		-24
word chunk	-14
word clean			13
word cock		16
word code	-23
word cold	-19		-20
word color	-58	84
word coming		20
word counter	29	19
word cover		73	-51
word cut	31	43	42
word dave		-56
word defect	-23		-12
word different	-33
word dining		37
word disp	18
word do		-26
word dog	-35
word double	-17
word down		-22	32
word draft	-60
word dry	50	13
word earliest		37
word electrical	46
word else		-23
word em		35	-22
word end	24	-39	16
word ends		-21
word everywhere		-45
word except	-21	-29	-22
word extra	-13		-27
word face	-14	-26
word factory		18
word far			-57
word fault	-24
word fell	29
word fella	-34	-51
word final		54
word finger	-46
word finish	-23	-15	-21
word fire		52
word first	54	-32	51
word flap	-16
word float	63
word for			23
word fourth	-30
word free	-23		21
word from		34
word front	-41	78	44
word full		71	14
word furniture		58
word gary	-75	-20	-20
word get		33
word go	-23	20
word god	29	-24	-53
word goes	-21	34
word gone			13
word guy		-24
word hair		-22
word hand	-16	-66
word hanging		27	58
word hard	18
word have		-49
word head	41	-16	21
word height			27
word hendersons			-13
word herself		18
word him		34
word his		-13
word holding	-44
word home		-71
word hot	33	44	13
word house		-26	28
word hung	-15		-42
word if		18
word in		-61
word inside	-16	-20
word instead	45
word is		-29
word it			-18
word itself		62
word job		-27
word kit	58	59
word last	23	-78
word layers	27
word lead	61		69
word led	28
word length	-17	-72	-21
word level			-21
word lid	25	16
word lint	-44
word list			30
word little	-30	-68	-21
word load		19
word longer	-42	14
word loop	14		47
word luis		-18	-25
word m		75
word machine	21	-30	-58
word make	32	35
word man		-36
word mark		52
word middle		-29	-26
word mind		-40
word more		35
word mr	-16
word my		-66
word n			-49
word needs	-25	-13
word new		-28
word next		-58
word nice		-17	-82
word no		-15
word noon		13
word nos			-21
word now			-30
word number			17
word o	-19		-19
word of		37
word off		-31
word oil		-35
word old		-14
word open	69	45
word order		-22
word other	-51		-17
word ours		-18
word out	15	-43	-18
word outta	-13	-22
word over	-14	-12
word own		-15
word pack			34
word pair	20
word paper			17
word patch	47	66	54
word people		-49
word piece			-14
word place			-44
word plenty		15
word press	50
word pressure			-49
word problem	-28
word put			-42
word quantity		15
word quiet			-18
word r	31	-27
word rain		-33
word rains		-18
word re		-62
word real	-13
word rear	26	45	14
word rental		-13	-27
word replacement		14
word right	29	-17
word ring	-25		41
word rise			-13
word rm			-65
word roll		55
word room	-27
word round	-50	15	-58
word row	22	29
word run	23
word runner		79
word running	-34		-15
word s	-30	-35	-41
word same	-39	-25
word sample		49
word scrap			-29
word second	-17	14	33
word she		45
word sheet		-24	-19
word sir	38
word site		-29
word size	-36	-14
word slip	-43
word slow	48		-49
word small	34
word somewhere		34
word sorry		-28
word spare	-63		-64
word spin	-82	-46
word spot	-53	38	-47
word start		27
word static	38
word still		27
word stop	-13
word store	-31	-43
word story		24
word straight			-52
word street	59		-40
word strip	22
word strong		-21
word suite	25
word supposed		-27
word tag		12
word template		19
word test		20
word that		12
word the		33
word them			43
word then		-26
word there		45
word third	83	-17	-32
word those		28
word through		-17	-39
word time			-53
word to		35	13
word top	-28	26
word total	-14
word twice	41		-61
word type		20
word u		-23
word under		55	57
word unit	-41
word up	-59	15
word upper			61
word us		-27
word volume		14	-18
word wants		-20
word weight			-23
word went	13
word whoever	-33		-13
word whole			-36
word width	-15
word wind	-33
word with		37	-16
word wrong	-39	-44	-22
word x			-58
word yet		-56
word you'd	-20
word zone	-35
`;
