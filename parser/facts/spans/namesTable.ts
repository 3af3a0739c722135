/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after at defect	-42
after at material	13
after at part	91
after at surface	15
after at word	-46
after by defect	-40
after by fixture	-32
after end defect	-18
after for defect	-26
after from defect	24
after in defect	-35
after in material	78
after in surface	51
after on defect	-53
after on material	71
after on surface	-21
after on word	-21
after quantity defect	-44
after quantity fixture	29
after quantity material	-16
after quantity part	49
after quantity size	49
after quantity surface	14
after quantity word	-37
after term area	49
after term finish	-24
after term fixture	50
after term material	-37
after term part	29
after term surface	-50
after term word	20
after word area	85
after word defect	-35
after word finish	-64
after word fixture	18
after word material	12
after word size	-35
after word surface	37
after word verbish	20
article a	-22
article the	25	16
as ruled all far	42	61	59
as ruled all far+here		36	-41
as ruled all far+phrase		12	20
as ruled all here	37	20	28
as ruled all pair	69	42
as ruled all phrase		20
as ruled all told		26
as ruled none far	-13	-34	-21
as ruled none here		-12	-12
as ruled none pair		23	39
as ruled none told		-15
as ruled some far		27	-14
as ruled some here		35
as ruled some pair		34	22
as ruled some phrase		30
as ruled some told		17	-31
behind about here-after	-17
behind about here-before	50
behind at +1	-44
behind at -1	27
behind at -2	23
behind at -3	-39
behind at -4	-35
behind at here-before	47
behind behind here-after	21
behind by +1	-21
behind by -3	-68
behind by -4	20
behind by here-before	80
behind down here-before	25
behind end -1	20
behind end -2	12
behind end here-after	-18
behind for -4	-49
behind for here-after	-103
behind from +1	-16
behind from -1	22
behind from -2	-31
behind from -4	-21
behind from here-before	56
behind in -1	64
behind in -2	-22
behind in -3	-40
behind in -4	-33
behind in here-after	22
behind mark -1	-44
behind mark -2	79
behind mark -4	-21
behind mark here-after	-24
behind number +1	-27
behind number here-after	36
behind of +1	-24
behind off -1	-32
behind off -2	-34
behind off -3	-43
behind off -4	60
behind off here-before	-30
behind on -1	35
behind on -4	-42
behind on here-after	-18
behind on here-before	31
behind out -1	32
behind out -2	-33
behind out -3	-21
behind out -4	-25
behind out here-before	35
behind quantity +1	-30
behind quantity -2	-13
behind quantity -4	22
behind quantity here-before	32
behind term +1	-14
behind term -1	14
behind term here-before	37
behind to here-after	-20
behind to here-before	41
behind up here-before	40
behind with +1	-27
behind with -1	46
behind with -3	-17
behind with -4	-12
behind with here-after	-35
behind with here-before	29
behind word +1	-12
behind word -2	20
behind word here-before	20
behind-verb			26
between 	23
between get	21
between get a	-35
between has a	40
between have	22
between is	36
by far		-13	-15
by far lacks none 0	35		-12
by far lacks none 1	-18	-33	-32
by far lacks none 2	-15	-13	-16
by far lacks none 3		-21
by far lacks points 0		13	13
by far lacks points 1			-20
by far lacks points 2		-14	18
by far lacks points 3			46
by far+here	-14
by far+here lacks none 1			-16
by far+here lacks none 2	-19		-14
by far+here lacks none 3	-17
by far+here lacks points 1		19	32
by far+here lacks points 2	15
by far+here lacks points 3			-31
by far+phrase lacks none 0		51	23
by far+phrase lacks none 1		18	24
by far+phrase lacks none 2			19
by far+phrase lacks none 3		16	-26
by far+phrase lacks points 0		-26
by far+phrase lacks points 2		28	-18
by here	17
by here lacks none 1	26	39	36
by here lacks none 2	25	-18
by here lacks none 3		-17	-27
by here lacks points 2	-62	-26	-37
by here lacks points 3		-26	-27
by pair		32	25
by pair lacks none 2		36	27
by pair lacks none 3	13	30	25
by pair lacks points 2		28	16
by pair lacks points 3		23	13
by phrase lacks none 0		-21
by phrase lacks none 1		23
by phrase lacks none 2		27
by phrase lacks points 3		12	-13
by told lacks none 0		-19	-26
by told lacks none 1		-23
by told lacks points 0			-19
by told lacks points 2			12
counted bare	18	29	25
counted count	32	48	-24
counted current	-13		22
counted length	-13		-18
counted pack	-20	12
counted percent	14
counted pressure	-30
counted time		-18	-17
counted voltage	33
counted volume	-29	32
does add far+phrase		51
does add here		15
does add kind material		79
does add kind part		30
does add kind word		-27
does add word		-23
does ask 		-26
does ask far		-50
does ask far+here		26
does ask far+phrase		75
does ask fixture		-24
does ask here		-13
does ask kind fixture		-19
does ask kind material		16
does ask kind part		53
does ask kind word		40
does ask pair		44
does ask part		13
does ask phrase		19
does ask surface		-46
does ask told		-30
does ask verbish		20
does ask word		26
does be area		-27	-14
does be defect		-25
does be finish			-23
does be fixture		12	18
does be part			19
does be size		-33
does be surface		21
does be tells		-38
does be tool		21
does be verbish		20
does be word		-20
does bolt far			53
does bolt far+here			-44
does bolt here			-14
does bolt kind material			-38
does bolt kind word			-38
does book 		-34
does book far		-14
does book far+here		45
does book kind word		36
does book phrase		-30
does box 			-12
does box far		52
does box far+here		-20	-14
does box far+phrase		-15
does box here			23
does box kind area			-32
does box kind material			69
does box kind part		42
does box kind surface		17
does box kind verbish		-22
does box kind word		-22
does bring 		18
does bring defect		-14
does bring kind area		-20
does bring kind defect		-15
does bring kind fixture		-12
does bring kind material		19
does bring kind part		-23
does bring kind tool		43
does bring kind verbish		55
does bring pair		63
does bring part		-30
does bring phrase		46
does bring told		-17
does bring tool		26
does bring verbish		45
does call far+here		-22
does call far+phrase		51
does call here		29
does call kind fixture		-18
does call kind material		45
does call kind part		63
does call kind word		29
does call material		42
does call pair		34
does call part		36
does call phrase		39
does call surface		-12
does call told		-34
does call verbish		-14
does cap far			15
does cap far+here			60
does cap here			-29
does caulk here			23
does change 		-14	19
does change far			-35
does change far+here		87	39
does change here			-38
does change kind part			15
does change kind word		-27	35
does change phrase		-20	-33
does change told			45
does change word			17
does check 		12
does check far		-27
does check kind defect		-25
does check kind part		-19
does check kind word		53
does check phrase		25
does clean far			-26
does clean kind area			-14
does clean kind defect			-22
does clean kind fixture			17
does clean kind material			-25
does clean kind part			64
does clean kind surface			16
does clean material			-37
does clean part			50
does clean surface			14
does close far		-18
does close far+here		54
does close far+phrase		-17
does close here		15
does close kind material		20
does close kind part		-42
does close kind surface		43
does close kind word		-57
does close phrase		-12
does come area		23
does come defect		-22
does come far			-18
does come far+here		-29	-17
does come fixture		-21
does come here		13	-20
does come kind area		-20
does come kind defect		-14
does come kind fixture		-12
does come kind material		15
does come kind surface			-19
does come kind tells		-42
does come kind tool		-21
does come kind word			-12
does come material		-17
does come pair		-30	-13
does come part		-39
does come verbish		72
does come word		31
does cut 		-35	-18
does cut area			-37
does cut far		14
does cut far+here		82	-12
does cut far+phrase		18	45
does cut fixture			33
does cut here			13
does cut kind area		-49	-18
does cut kind defect		42
does cut kind fixture		15	41
does cut kind material		33
does cut kind part		-46
does cut kind size		49	-19
does cut kind surface		41	21
does cut kind verbish		42	13
does cut kind word			33
does cut material		15
does cut pair			56
does cut phrase		-31	-21
does cut surface		67
does cut told			-20
does cut verbish		38	-22
does cut word		-13	40
does dig 		-40
does dig far		23	17
does dig kind surface			20
does dig told		-21
does do 			-13
does do far		-49	-18
does do far+here		38
does do far+phrase			-23
does do fixture		-27
does do here		-17
does do kind area			46
does do kind fixture		-28
does do kind material		24
does do kind part		23
does do kind surface		-12
does do kind verbish		-36	-16
does do kind word		-43	-22
does do pair			60
does do part		49
does do word		-50
does drill far			-32
does drill far+here			-33
does drill here			32
does drill kind part			-30
does dry 		-16
does dry far		-14
does dry far+here			15
does dry here		-43	-17
does dry kind area		-15
does dry kind material		-26	-17
does dry kind part			-12
does dry kind surface			14
does dry kind verbish		32
does dry kind word		-35
does dry pair		13	-14
does dry phrase		-22
does fill 		19	-12
does fill far			42
does fill far+here			26
does fill far+phrase			61
does fill here			-38
does fill kind area			-29
does fill kind defect		55	97
does fill kind fixture			42
does fill kind material		-22
does fill kind surface		52	23
does fill kind word			-19
does fill material			14
does fill word			-41
does find 		-44
does find far		-16
does find far+here		44
does find here		32
does find kind material		46
does find kind word		45
does find material		14
does find phrase		-35
does finish 		40
does finish area			-23
does finish far+here		-13	26
does finish here		77	-57
does finish kind area			-16
does finish kind fixture			-28
does finish kind material		17	-15
does finish kind part		-14	-47
does finish kind size			32
does finish kind surface		20
does finish kind verbish		30	15
does finish kind word		28
does finish material			-24
does finish told		25
does finish word			38
does fit far			-14
does fit far+here			-19
does fit here			53
does fix 		-37	-20
does fix far		39	26
does fix far+here			61
does fix kind material		28	-26
does fix kind word		-16	71
does fix pair			24
does fix told		-56
does flush told		-15
does fre far			26
does get 		-19
does get area		-23
does get defect		12	14
does get far		-25
does get far+here		-22
does get far+phrase		-18
does get finish		-19
does get fixture		49	-83
does get kind area		-13
does get kind defect		-13
does get kind finish		-12
does get kind material		13
does get kind part		-23
does get kind verbish		15
does get kind word		-48
does get material		35	-23
does get part		-19	21
does get phrase		-12
does get surface		13
does get verbish		-40	-33
does glue 		-16
does glue far			50
does glue far+here		17	16
does glue kind defect			19
does glue kind fixture			44
does glue kind material		54	15
does glue kind part			-12
does glue kind verbish			61
does glue kind word			-36
does glue pair			-13
does glue phrase		-13	19
does glue told			-12
does glue word			-71
does go 		-31
does go far		-15
does go far+here		-33	-25
does go far+phrase		16
does go here		-22	-28
does go kind area		-13	-22
does go kind defect		-35
does go kind fixture		-29	17
does go kind material		-30
does go kind part		52	-44
does go kind surface		-19
does go kind tool		-14
does go kind verbish		-24	-37
does go kind word		-17	-23
does go material		-36	41
does go pair		-46	-28
does go part		43
does go phrase		-15
does go surface		41	25
does go told		-19
does go tool		24
does hang 		18
does hang area			25
does hang far+here		-41	-13
does hang far+phrase			47
does hang fixture			14
does hang here		14	48
does hang kind area		-12	38
does hang kind fixture		69	77
does hang kind material		-21	13
does hang kind part		43	-16
does hang kind surface		-15
does hang kind verbish			-14
does hang kind word		-43	-15
does hang material			14
does hang pair		23
does hang part			-13
does hang phrase		46
does hang surface			27
does hang told		-26	-13
does hang word		-31	-47
does have area		-29
does have material		15
does have part		79
does have word		-13
does hold 			-22
does hold far			-34
does hold far+here			-21
does hold kind material			17
does hold kind part			-17
does hold kind word			-18
does hold told			-26
does i'll word		14
does install far		-18	-18
does install far+here		14	-16
does install here			40
does install kind area			-14
does install kind defect			-15
does install kind finish			-33
does install kind fixture		-13	38
does install kind part		25	50
does install kind surface		12	-17
does install kind tool		-27
does install kind word		27	16
does install kind work			-12
does install pair		41	22
does keep 		67
does keep far		-13
does keep phrase		64
does keep told		14
does land far		-18
does land here		16
does land phrase		14
does land told		-12
does lay 			-17
does lay far			-26
does leave far		-28	-27
does leave far+here		-31
does leave far+phrase		-33
does leave here		-16	-18
does leave kind fixture		-19
does leave kind material		-27
does leave kind part		-31
does leave kind surface		-23
does leave kind tool		-20
does leave kind word		-32
does leave material		33
does leave pair		15
does leave surface		-43
does leave told		-17
does leave word		-60
does let material		-18
does let word		-14
does level far			-32
does level here			-23
does level kind fixture			17
does level kind material			-77
does look 		14
does look defect		-30
does look far		52
does look far+here		39
does look far+phrase		14
does look here		-41
does look kind area		25
does look kind defect		-30
does look kind fixture		67
does look kind material		49
does look kind part		39
does look kind surface		-33
does look kind verbish		28
does look kind word		-35
does look told		13
does make far		-45	-19
does make far+here		27
does make far+phrase		35
does make here		-56
does make kind area		-26
does make kind defect		-23
does make kind fixture		78
does make kind material		-40
does make kind verbish		13
does make kind word		21
does make material		20
does miss 		-18
does miss here		-16
does miss pair		-25
does mount here			41
does mount kind part			17
does move far			13
does move far+here		-18	-17
does move far+phrase		-43
does move here		26
does move kind fixture		-39	-31
does move kind material		-17
does move kind part		20
does move kind word		42	49
does move material		-23
does move pair		55
does move part		19
does move phrase		17
does move surface		-33
does move told		-24
does move word		21
does need area		-35
does need defect		45
does need fixture		26
does need material		39
does need part		-44
does need size		-14
does need verbish		-21
does need word		18
does open 		-13
does open far			54
does open far+here			-40
does open far+phrase		-31
does open here			-35
does open kind surface		51
does open kind verbish		-31
does open kind word		-26	-55
does open pair		-26
does open phrase		-15
does open surface		40
does order 		-25
does order far+here		27
does order far+phrase		-13
does order here		-12
does order kind defect		14
does order kind fixture		29
does order pair		35
does order phrase		-13
does order told		-14
does order word		-26
does owe far		-14
does pack far			-48
does pack here			94
does pack kind material			40
does paint 		73
does paint far		-29	-50
does paint far+here		21
does paint far+phrase			13
does paint here			32
does paint kind material		-13
does paint kind surface		106
does paint kind verbish		-33
does paint kind word		-27	17
does paint told		71
does pass far+here			38
does pass here			-41
does pass kind word			18
does patch far		31	27
does patch far+here		25
does patch kind part		-47
does patch kind surface			33
does patch kind word		66
does pick 		39
does pick far+phrase		-14
does pick kind material		14
does pick kind part		24
does pick kind surface		-14
does pick kind word		-15
does pick pair		33
does pick phrase		48
does plane 		-38
does plane kind surface		-53
does pour here			18
does prime 		39
does prime far		-18
does prime far+here			-19
does prime here			43
does pull 		20
does pull area			-18
does pull defect			-12
does pull far		-26	-57
does pull far+here		-32
does pull far+phrase			-14
does pull here		14	72
does pull kind defect		-12
does pull kind fixture		18	31
does pull kind material		-27	15
does pull kind part		-12	-25
does pull kind surface			-15
does pull kind verbish			17
does pull kind word		13
does pull material		35
does pull pair		78
does pull part			-15
does pull phrase		62
does pull surface			-14
does pull told		-36
does pull verbish			12
does pull word			-29
does put 		23
does put area		-46
does put defect			23
does put far			-33
does put far+here			20
does put far+phrase		-57	21
does put fixture		17
does put here		15	-31
does put kind area			-22
does put kind defect		-43
does put kind finish		-24
does put kind fixture		41
does put kind material		-48	-16
does put kind part		-17
does put kind surface		34	-25
does put kind tells			15
does put kind word		28	-22
does put material		-31	-46
does put pair			12
does put part			-20
does put phrase		-22	-20
does put surface		32
does put told		45	34
does put verbish		-23	-33
does put word		-26
does redo far+here		44
does redo here		22
does redo kind material		42
does redo kind part		14
does replace far+here			101
does replace far+phrase			24
does replace here			-23
does replace kind area		-24
does replace kind defect			15
does replace kind fixture		-15	-33
does replace kind part		40	27
does replace kind surface		-13	21
does replace kind verbish			22
does replace kind word			37
does replace material			-19
does replace part			-14
does reset 			-22
does reset far			40
does reset kind part			67
does return far		-38
does rip 		15
does rip far		18
does rip kind material		-52
does rip material		-60
does rip told		-14
does roll far			-20
does run 		-17
does run defect			-19
does run far		-51	40
does run far+here			14
does run far+phrase		101	-69
does run kind area		-12	-43
does run kind defect			-28
does run kind fixture			61
does run kind part			18
does run kind size			-22
does run kind surface		47	-20
does run kind verbish		-23	-49
does run kind word		-14	-22
does run material		14	29
does run pair		-20	-21
does run part			22
does run phrase			-17
does run told		-27	28
does run verbish			-46
does run word		-16	-32
does sand 		-22
does sand defect		26
does sand far		98
does sand here		-16	15
does sand kind area		-28
does sand kind defect		21
does sand kind fixture		44
does sand kind material		20
does sand kind part		57
does sand material		-19
does sand phrase		-17
does sand surface		-16
does sand told		-12
does sand word		25
does say material		-21
does say part		67
does screw far+here			-17
does screw far+phrase			-30
does screw here			-19
does screw kind fixture			-49
does screw kind material			-14
does screw kind word			-42
does screw pair			-73
does scribe far+here			-32
does scribe here			22
does scribe kind material			62
does scribe kind surface			-22
does scribe kind word			-29
does scribe material			58
does scribe surface			-42
does scribe told		-16
does scribe word			27
does seal far			15
does seal far+here			-13
does seal here			54
does seal kind area			14
does seal kind material			-14
does seal kind surface			63
does seal kind word			-34
does seal surface			61
does seal told		31
does seal word			-51
does see 		-27
does see far		20
does see far+here		-14
does see kind area		-64
does see kind defect		62
does see kind material		-23
does see kind surface		51
does see kind word		-32
does see pair		12
does see told		-33
does send far		55
does send far+here		-17
does send far+phrase		107
does send kind fixture		58
does send kind part		64
does send kind size		-18
does send kind surface		47
does send kind word		19
does send pair		30
does send phrase		28
does send word		-23
does set 		-39
does set far		-32	-22
does set far+here			-22
does set far+phrase		83	38
does set here		13	97
does set kind area			16
does set kind fixture			16
does set kind material		80	53
does set kind surface		-15
does set kind word		-18	30
does set material			31
does set phrase		-29
does set told		-14	-14
does shim far+here			20
does shim far+phrase			29
does shim kind defect			-42
does shim kind fixture			45
does shim kind material			24
does show 		24
does show far		-12
does show far+here		-23
does show kind material		13
does show kind word		-31
does show phrase		42
does show told		-17
does shut 			19
does shut far			51
does sit far+here		-57
does sit here		-12
does sit kind part		-16
does sit kind surface		13
does sit kind word		-21
does sit phrase		-20
does sit word		-16
does skim 		27
does skim far		80
does skim told		21
does snug defect			-14
does snug far			21
does snug kind defect			-15
does snug kind material			65
does snug kind part			18
does snug material			63
does snug part			15
does start far		39
does start far+here		-28
does start here		12
does start kind material		-14
does start kind part		-26
does start kind surface		35
does start kind verbish		-14
does start kind word		-41
does start phrase		38
does start told		-21
does stick 		-14
does stick far		-14
does stick far+here		-37
does strip 		-13
does strip far			-13
does strip kind material		16
does swap 		-33	28
does swap defect			-19
does swap far		20
does swap far+here		63	-34
does swap far+phrase		20	-23
does swap fixture		-17
does swap here			47
does swap kind area		-30
does swap kind defect		14
does swap kind fixture		-18
does swap kind material		23	49
does swap kind part		88	16
does swap material		21	44
does swap pair		29	32
does swap part		92
does swap phrase		-25
does swap surface		-25
does swap told		-17	43
does swap word			-14
does take 		-25
does take area			18
does take defect		-43	-12
does take far		14	-21
does take far+here		30
does take far+phrase		18	83
does take here			-44
does take kind area		-15
does take kind defect		-14
does take kind finish		21
does take kind fixture		29
does take kind material		14
does take kind surface			-75
does take kind tool		95
does take kind verbish			-24
does take kind word			-15
does take material			22
does take pair		16	-35
does take part			36
does take phrase		-18
does take told		-16
does take word		86
does tape far			28
does tape far+here			-14
does tape kind defect			-23
does tape kind word			74
does tape told			-12
does tell far		-30
does tell far+here		-41
does tell far+phrase		-35
does tell here		47
does tell kind fixture		30
does tell kind material		-17
does tell kind part		-35
does tell kind surface		-20
does tell kind verbish		33
does tell kind word		-27
does tell material		18
does tell phrase		36
does tell told		-42
does tell word		-21
does test far			33
does test far+here			-12
does test here			47
does test kind word			51
does test word			18
does tighten far			19
does tighten kind material			-19
does top 		-32
does top far		28
does top far+here		-19
does top kind area			27
does top kind material		-23
does top kind verbish		-25
does top kind word		-13
does top told		-32
does touch 		-30
does touch far		-13
does touch kind word		-18
does touch told		-15
does trim 		13
does trim told		-27
does use far			-20
does use kind material			-47
does walk told		-12
does want area		-32
does want fixture		-58
does want material		13
does want part		-31
does want surface		20
does want verbish		-16
does want word		-19
does wrap pair			15
ends DET			-39
ends NEG		-55
ends Nidiom		-44	33
ends Nlabel		20	21
ends OPR		22
ends PREP	-23	-17
ends PRON			-25
ends Q0		15	-30
ends Qcount			-30
ends Qlength		-47	-36
ends Qpack			30
ends Qtime			-23
ends Vmeasurei	-28	-27	-31
ends Vmoveb	54	-17
ends Vmovep	14	-12
ends Vmoves	13	13	-15
ends Vneedb		16
ends Vneeds	-13	-33
ends Votherb		-19
ends Vsayb	-64	-24
ends Vseeb	-12	-20
ends Vworkb		13
ends Vworkbp	28
ends Vworkbpp	-33		26
ends Vworki	-13	50
ends Vworkpp			14
ends Vworks	12	-23	-30
ends plain		13
ends tarea's	47		-24
ends tdefect	-24	-16	-18
ends tdefect's			40
ends tdefectVotherb	-14	42	15
ends tdefectVotheri		-24	-19
ends tdefectVotherp	13	-24	-13
ends tdefectVotherpp	-13	-17	-36
ends tdefectVothers	-19	16
ends tdefectVworkbpp			50
ends tdefectVworkp		-22
ends tdefectVworkpp		-25	-25
ends tdefectVworks		15
ends tfinish		-21	-13
ends tfinishVworkb	-40
ends tfinishVworkpp		-27	32
ends tfixture	18	23	25
ends tfixture's	76	13
ends tfixtureVworkb	-17	34
ends tmaterial			16
ends tmaterial's	48		-13
ends tmaterialVotherb	23
ends tmaterialVworki	50	22	18
ends tmaterialVworks	16		-21
ends tpart		23	15
ends tpart's		20
ends tpartVotherb	26		14
ends tpartVothers		-26
ends tpartVworkb	23	24	26
ends tpartVworks	62	12	18
ends trole		21	37
ends tsurface		23
ends tsurface's	40	-18
ends tsurfaceVotherb		-12
ends tsurfaceVworkb	-17
ends tsurfaceVworki	19	-29	22
ends tsurfaceVworks	28		15
ends ttoolVworkb	-13	-12
ends ttoolVworks	-34	-21
ends twork	-14	-13	15
ends verb	-12
ends w	-12	-13
ends w's		-24
ends wed	-43
ends wing	-22		-26
far after 0			23
far after 1	22		25
far after 13+	-22
far after 3-4			-19
far after 5-7	-20		-16
far after 8-12	-16	-12	-23
far before 0	25	33
far before 1		-28
far before 13+			-14
far before 2		27
far before 3-4		12	23
far before 5-7			21
figure-between	29
flawed			39
frame copula +1	-15
frame copula -1		-19	-14
frame copula -3			-17
frame copula -4			12
frame copula area		77	-14
frame copula defect		-39
frame copula finish			-31
frame copula fixture			55
frame copula here-after	-14
frame copula here-before	27	13	12
frame copula tool		-25	-18
frame copula verbish			14
frame copula word		-29
frame imperative +1	20		-18
frame imperative -1		21
frame imperative -2			-64
frame imperative -3		-25	50
frame imperative -4	-52		52
frame imperative area		-19
frame imperative defect		-20
frame imperative fixture		17	61
frame imperative here-after	24	-17
frame imperative here-before		-50
frame imperative material			-21
frame imperative part		31	-25
frame imperative size		38
frame imperative surface			32
frame imperative tells		-44
frame imperative tool		-23
frame imperative word		-21	-33
frame modal +1		-28
frame modal -1		-13
frame modal -3	64
frame modal -4	-53
frame modal defect		-12
frame modal finish		-40
frame modal fixture		-12
frame modal here-after		26
frame modal here-before	-16	48
frame modal part		43
frame modal size		-30
frame modal surface		40
frame modal tool		33
frame modal verbish		-21
frame modal word		-26
frame none +1	-29	-12	-15
frame none -1	20	36
frame none -4		-23	-14
frame none area			19
frame none defect		-15	-19
frame none fixture		32	-23
frame none here-after		29	14
frame none here-before	15	12	-49
frame none material		19
frame none part		23	15
frame none size			-19
frame none surface			-28
frame none tells		33	-33
frame none tool			15
frame none verbish		-22	15
frame none work			29
frame owed +1	65	-34
frame owed -2	-16	24
frame owed -3	-44	31
frame owed -4	-12	-21
frame owed defect		-12
frame owed fixture		12
frame owed here-after	20	45
frame owed here-before		16
frame owed material		22
frame owed part		-14
frame owed size		-14
frame owed surface		22
frame owed tells		12
frame owed tool		-22
frame owed verbish		-18
frame past +1			-21
frame past -1		62	36
frame past -2		-28	18
frame past -3		19
frame past -4	-27	12	-34
frame past area		-49	-12
frame past defect			-19
frame past finish		-64
frame past fixture		43
frame past here-after	28	-26
frame past here-before		12	38
frame past material		16
frame past part		15	34
frame past size			18
frame past surface		65
frame past tells			13
frame past verbish		-37	-27
frame past work			-18
frame present +1	-36	-22	-33
frame present -1	20	17	17
frame present -2	33	23	-12
frame present -3			-12
frame present -4	21	-12	13
frame present area		-13	33
frame present defect		13	19
frame present finish		-17	24
frame present fixture		47
frame present here-after	-49		24
frame present here-before	17	41	17
frame present material			-13
frame present part		16	-15
frame present size			37
frame present surface			-13
frame present tells		-20
frame present tool		-20
frame present verbish		26
frame present word		-12	-32
head 2 x	-14		-41
head adhesive		-30
head air	-27	-29	-37
head altogether	-15
head anybody		-40
head anyhow	-29
head anything		-16
head arvo		-31
head aside		-12
head attic	12	21
head b	-46
head back door	-32		-29
head backsplash		32	29
head bad	-25	-48	26
head bag	-22	-46
head bar	-15	-27
head base	-23	-36
head basement	26		-61
head bath		25	54
head bathroom		14	31
head battery	-30
head bay	49	-42	-14
head bed	-26		20
head bedroom	13		30
head bedroom 2	-32
head bench		21	14
head better		-35
head bit	-29	-60
head black		-20
head bled	-33
head blinds	115		73
head board	54	23	46
head boards	91		66
head bolts			15
head bottom	-35	21
head box	26	-30	40
head boxes		-23
head bracket	28	-34	43
head brackets	52	37	36
head breaker	-48	24	30
head broke	37
head bucket	-50
head c			-34
head cabinet	40
head cabinets		85
head cable	49	-54	42
head cap	-32		-13
head carpet	-16	-21	-13
head cartridge	-16
head case			-17
head casing		49
head caulk		16
head ceiling	24	72	13
head center	-16	-13	-21
head chimney	-23		-37
head chip	-23
head clamps	-34
head clear	-40
head closet	80	54	23
head closet rod	53
head coat	-15	37	22
head code	-32
head coil			12
head cold	-42		-18
head color	-16	59
head concrete		34
head corner	-64	-55	-55
head counter	26	12
head crack		106	34
head cracked	-17	-13	-20
head crown	23
head crown's		28
head curb	-13	51
head cut		14	20
head cut out	-48	-15
head damper	-44
head deck	-55		28
head den		64
head desk	-19
head dining room	-25		-16
head dishwasher	33
head disp	19
head door		-34	19
head door's	-16	-68	29
head doors	60	86	-13
head downspout	21	-25
head drain	85	23	77
head drawer	-30	-40	-15
head drawing	23	-14
head drip	-15	16
head drop		72
head drops	25
head dry		-37	-17
head drywall	96	38	-13
head duct	-38
head edge	-65	31	26
head either	-15
head elbow	-28
head electrical		29
head end	-18	-26
head end panel	-12	-45	-17
head entry		55
head epoxy		47
head except	-17	-58	-16
head extra			-23
head face		-12
head fall	-16
head falls	80
head fan		29	25
head faucet	-76
head fell	28
head fella		-25
head filter	-14
head filters			62
head fireplace	39	-18
head first coat	-26	49	24
head flange	66
head flashing	-68
head flat	-14	14	-31
head flex	-27	-33	100
head float	71
head floor		-46
head floor's	39	27
head foam	-35	-53
head frame	-71	19	-19
head free	-21
head fridge	-47	-46	-30
head front	-25	34	32
head full		19
head furnace	-16		-40
head gap		-13
head garage	-56
head gas	-28	36	-30
head gasket	-13		-74
head gate	71	38
head glass	31
head glue	-14	25	-18
head go	-24
head god	-42
head goes	-15	33
head gone			12
head grease	-36
head grout		50
head hair	-19	-28
head hall		-36	-40
head hallway	26	133
head hand		-19	-38
head handle	-31	-19	-30
head handrail	-71
head hanging	30	40
head hard	26	-25	13
head hatch	41	-36
head head	97
head header		40
head hearth	36
head height			23
head herself		-15
head hinge	-52	-16	12
head hinges		37	-53
head hole	-19		41
head holes		-27	99
head hollow	-44
head home		-42
head hood	-24
head hose	18	18	46
head hose bib	-33
head hot	21	42	17
head house	-38	-28	-28
head humidity		-19
head hung	-18	15	-28
head inside	-23	-12
head instead	53
head insulation	-33	-39
head island		52
head jack		42
head jamb	-15	14
head job	-28	-30	-18
head joint		31
head joints		-50	12
head joist	-25	17	-30
head joists	66	-15
head keys		23
head kit	54	39
head kitchen	15		-12
head kitchen faucet	-36
head lags			-32
head landing	60		16
head latch	34		31
head laundry	49
head layers	41
head lead			61
head leak	-40
head leaking		-12	-20
head leg	-58	-61
head legs	26
head length	-15
head lid	32	54	14
head light		-34	-28
head lights		60
head line	15	13	59
head living room	27	-27
head lock	13	-27
head loop	23
head loose		-17	-41
head machine		-26
head main	67
head marco		-47
head master bath			-17
head mastic		-14
head me		-18	-19
head mesh	-12		21
head meter	-55	63	24
head middle	-50	-20	-38
head mirror		-20
head missing		-25
head miter	28
head mortar		-56
head mud	-35	-53	26
head nail	32	-19
head needs	-28	-12
head number	-51		-26
head nut	33		50
head o	-21		-20
head office	34		-19
head open	55	65
head opening	-25	-27	-13
head outlet	-27	14	47
head outside	-23		-30
head oven	31
head overhang		58
head paint		16
head pan	25	-40
head panel	16	56
head panels	24	40	43
head pantry	13	-12	-26
head paper	-18
head part	-13
head piece		26	-31
head pipe	57	-41	-31
head plaster		78
head plastic	-18		-23
head plate	18	-27	-25
head plates	41	54
head plug		24
head plywood		36
head poly		-63
head porch			-29
head post	-72	14
head posts	-19	49	15
head pressure			30
head primer	47	-53	-25
head proud		-20
head pull		-48
head pulls	16	15	14
head pump	82	36
head punky		-22
head r			-17
head rack	-69	-54
head radiator	-20	-28
head rail			56
head rear	24
head red	-13	-14
head reducer		30
head relief valve	-43
head ring	-57	14	45
head rise		-15	-13
head rm	41		-15
head rock		28	16
head rocks		-22
head rod	-30
head roof		87	25
head room	-12	-18
head round	-29	-18
head run	28		-12
head salon	-85		-17
head same		-45
head sand	-13	25
head screed		28
head screen	28
head screw	-35	-23	-15
head screwdriver		-16
head screws	-47	-26	-73
head sealant		-17
head seam	51	54	47
head second coat		-50	-23
head sheathing	94
head sheet		-26
head shelf		45	36
head shims		19
head shop	-29	-68	-32
head shot	-17		-18
head shower	-16	32	58
head side	-70	-37	-34
head sides	19	-30
head silicone			-27
head sill	-38
head sink	-38	23	-39
head size	-36	-16
head skirting	85
head slab	49
head slider	-25
head slides	-29
head slope	14
head slow	53
head soffit	-70
head splice	31
head split			50
head spot	-45		-44
head spring	-31
head stain	-41
head stairs	71	19	-12
head stat	-22
head static	27
head step	22
head steps	47	-20
head stile		-49
head stone	-16
head stop	-16	21
head story		24
head stove	13
head straight		-14	-25
head street	74
head strike		20
head stripped	-17		-22
head stud	36
head studs	-34	28	-18
head subfloor	34
head supposed	-15	-12
head tap	-46
head tee			-12
head temp			-22
head template		33
head thermostat	-27
head threshold	24
head tile		-16
head tiles	98	18	34
head toilet	121	37	60
head too high	-15
head too long	-19	-35
head top	-34
head track	-13	-33	-13
head trap	20	16	28
head treads	39
head trim	-22	27
head truck	-23	-16	25
head tub	-29	-41	45
head tub's			64
head twice	51		-47
head unit	-23
head uppers	-53	-19	23
head upstairs	51		-37
head us		-19
head valve		-45	37
head van		23
head vanity	-28
head vanity top		-38
head vent	-20	54	-38
head wall		16	-38
head wall bend			-25
head wall's	-13	-24	14
head walls		-34	-58
head wants	13	-37
head washer	-24	36
head water	-48	-62	-47
head wax ring	-19		-48
head weatherstrip	15
head weeping			-12
head went	26
head wet	-21	47
head white	-17	-29
head whoever	-20
head window	26	35	47
head windows			-13
head wire	22	40	51
head wood			-18
head wrong	-16
heading	25		-15
heading +1		21	-24
heading -1		-48
heading -2	19		-20
heading -3	47	-31	20
heading -4	41	12	-33
heading here-after	-24
heading here-before	45
join +1	-22		-14
join +1 area	-24	45
join +1 defect	-25	-16	-21
join +1 fixture		-27	-18
join +1 material	-13		-25
join +1 part		-22	-24
join +1 size	16		-12
join +1 surface	-16	-31	-14
join +1 tells	-23
join +1 tool	-26
join +1 verbish	-14	-22	-18
join +1 word	-20
join -1		15
join -1 area	22
join -1 defect		24
join -1 finish	-31	47
join -1 fixture	26	71	17
join -1 part		41	60
join -1 size		-22	62
join -1 surface	-17	13	36
join -1 tells	34
join -1 tool	32	-23	-20
join -1 verbish			-23
join -1 word		-16
join -2 area		39	-26
join -2 defect		-17
join -2 finish		-39
join -2 fixture	13	25
join -2 material		23	36
join -2 part			13
join -2 size	31		19
join -2 surface		-38
join -2 tells	-15	17	40
join -2 tool		-13	-13
join -2 verbish			-13
join -3			-12
join -3 area		-13
join -3 defect		-25	-13
join -3 finish		20
join -3 fixture			23
join -3 material		13	-22
join -3 size	-23		-23
join -3 surface		47
join -3 tells		-20
join -3 tool	-18	-15
join -3 word		-19
join -3 work	-14	-31	-23
join area	32		14
join area+area		55	-25
join area+fixture		22
join area+material		34	27
join area+part	45	-51
join area+size		-41
join area+surface	45	-44
join area+tool	-37	30
join area+verbish			36
join area+word	12	-16
join defect			15
join defect+area			-15
join defect+defect			-13
join defect+finish		-17
join defect+fixture		30
join defect+material			-22
join defect+part		30	23
join defect+size		-12
join defect+surface			31
join defect+verbish			-18
join defect+word		-39	29
join finish			-18
join finish+area	-22		36
join finish+defect		-15
join finish+material			-56
join finish+part			-36
join finish+surface		12	17
join finish+word	17	-21	29
join fixture			-19
join fixture+area	-20	-44	-18
join fixture+defect	-16	15	-21
join fixture+fixture		-23
join fixture+material			-23
join fixture+part		20
join fixture+size		-16
join fixture+surface	14	-27	22
join fixture+tells	54	-29
join fixture+word			-17
join heading	13	15
join leads around	41
join leads at	29	29	-27
join leads behind	43	25	-27
join leads by	43	29
join leads by term	-13
join leads by term word	14
join leads down	20
join leads for	42	-24
join leads from	38	24
join leads in	31	-26	34
join leads in word	-24
join leads in word term	-17
join leads in word word	-30
join leads mark			24
join leads of	26	78	-24
join leads of term word	-12	47
join leads off	60
join leads on	30	-14	42
join leads on quantity	36
join leads on term verb	36
join leads on term word	32
join leads over	30	65	-17
join leads quantity			-29
join leads quantity at	-37
join leads quantity of	-23	-12
join leads quantity on	-54
join leads quantity word	20
join leads term			58
join leads term word	-29
join leads through	42
join leads time	67
join leads to	12		39
join leads under	39
join leads verb		38
join leads verb at	35	29	58
join leads verb at quantity	-17
join leads verb by	20
join leads verb in			-47
join leads verb mark	44
join leads verb of	30
join leads verb on		62	13
join leads verb quantity	-24
join leads verb quantity of	-59
join leads verb quantity on	48
join leads verb term word	-25
join leads verb to	-15
join leads verb verb word	-28
join leads verb with	19		29
join leads verb word	-13	27
join leads verb word on	60
join leads verb word word	36
join leads with			-49
join leads with quantity	-16
join leads word		-19	27
join leads word in	-12
join leads word on	14
join leads word quantity		-27
join leads word quantity of	-14
join leads word quantity word	-21
join leads word term	-23	-18
join leads word term verb	22
join leads word term word	-17
join leads word to		-73
join leads word to verb	-14	-16
join leads word verb	-16	28	39
join leads word verb at	-19
join leads word verb in	-32
join leads word verb on	47
join leads word verb quantity	-29	-59
join leads word verb term	-17
join leads word verb verb	-28
join leads word verb word		34	45
join leads word word		-47	16
join leads word word quantity	-16
join leads word word to	-18
join leads word word verb	-50
join leads word word word	96		19
join material	-25	18
join material+area		39
join material+defect	-15
join material+finish		-38
join material+fixture		12
join material+material			30
join material+part	-18	-14	61
join material+size	-37	13	-35
join material+surface	-17	42
join material+tells	-16	-12	29
join material+tool		24
join material+verbish			13
join material+word			-32
join part	-26	-26	-33
join part+area	-39
join part+defect		-26	-13
join part+finish		-27	20
join part+fixture		-12	29
join part+material	-19	32
join part+part			-39
join part+size	33	-17	21
join part+surface		-16	-36
join part+tells	-19
join part+tool	-21		-29
join part+verbish	-31	-20	-31
join part+word	-12	-20	-12
join same-before	15
join same-before defect	-12
join same-before finish		-15	-27
join same-before fixture		-17
join same-before material	12		34
join same-before part		23
join same-before size	-13	20
join same-before surface	17	-22
join same-before tells	-27	27
join same-before tool	13	55
join same-before verbish		-29
join same-before word	13
join same-before work			24
join size		-12
join size 3	26		-22
join size+area	37		-19
join size+defect			-46
join size+finish	-22
join size+material	24	-26	26
join size+part			42
join size+surface	-30	-14	-37
join size+word		22	-12
join sizes 1+2		17
join sizes 2+3	14	21	14
join sizes 3+1	34	18	-18
join sizes 3+3	-24		-41
join surface	23	16
join surface+area	55	-23	22
join surface+defect	-14
join surface+finish		14	-43
join surface+fixture	14	34	14
join surface+material		24
join surface+part	19		-22
join surface+size	-12	-17
join surface+surface	25		17
join surface+tells		22	-17
join surface+tool	-39
join surface+verbish	21	39	-20
join surface+word		-12
join surface+work			-18
join tells	22	58
join tells+area	20
join tells+defect		-13	-15
join tells+fixture	34		-18
join tells+material	30	-15	-40
join tells+part	-26	58
join tells+surface		35
join tells+verbish			15
join tells+word	13	18
join tool		13
join tool+area		-23	12
join tool+defect	-12	-19	-14
join tool+fixture	-23		-15
join tool+material	-18	-26	22
join tool+part		13	44
join tool+surface	19	88	-20
join tool+verbish	54	34
join tool+word	-20	-12	-23
join verbish		-12
join verbish+area	42	-24	-19
join verbish+defect		-15
join verbish+fixture			-28
join verbish+material	-20		33
join verbish+part		39
join verbish+size		22
join verbish+surface	-12	20
join verbish+tells			-12
join verbish+tool		-24
join verbish+verbish		-32
join verbish+word	-12	-34
join word+area		12	-41
join word+defect		-18	14
join word+finish	-15	29	-16
join word+fixture			30
join word+part	16	20
join word+size		17	29
join word+surface	-14	-28	14
join word+tells	-19	31	47
join word+tool	52		17
join word+verbish			-27
join word+work	-14
join work	38	-73	52
join work+fixture		-49
join work+word		-53
kind +1 area	-13
kind +1 defect		-19
kind +1 finish			-26
kind +1 fixture		-16
kind +1 part		-19	-23
kind +1 surface	-25
kind +1 tells	-14	13
kind +1 tool		16	-16
kind +1 verbish	-22	-20
kind +1 word		-17	-19
kind +1 work		-41
kind -1 area			-17
kind -1 defect	-25	-12
kind -1 finish	-19	-48	-40
kind -1 fixture		15	22
kind -1 material	31	23	19
kind -1 part		81	53
kind -1 size	14		23
kind -1 surface	18	17	18
kind -1 tells	-31	12	22
kind -1 tool		-19	-36
kind -1 verbish	24
kind -1 word	12
kind -2 area	-18	30	12
kind -2 defect		-22	-44
kind -2 finish	-23		38
kind -2 fixture	64	47	16
kind -2 material		21	27
kind -2 part	23
kind -2 size	40	20	-12
kind -2 surface		-29
kind -2 tells	-15	-21	-29
kind -2 tool			35
kind -2 verbish	-20
kind -3 area	-12	-21	-26
kind -3 finish	-16	-25	-18
kind -3 fixture	13		24
kind -3 material		-24
kind -3 part	-12	32
kind -3 size	-31		-22
kind -3 surface	40	25	-29
kind -3 tells	-15	-49	21
kind -3 tool	-18	-24	-12
kind -3 verbish	-22
kind -4 finish		-14
kind -4 fixture	21
kind -4 material			-20
kind -4 part	-16
kind -4 size	-16	-25	-15
kind -4 surface		19	-17
kind -4 tells		-12
kind -4 tool	41		-38
kind -4 verbish		-20	-16
kind -4 work		-17
kind defect	-22	-14	-15
kind finish	-14	-16
kind fixture	26	19	19
kind here-after area	63
kind here-after defect	-27	-33
kind here-after finish	-21	30	43
kind here-after fixture		53
kind here-after material		42	-21
kind here-after part	58	30	23
kind here-after size	25	33	26
kind here-after surface	13	26	15
kind here-after tells		37	-25
kind here-after tool	-64	-29
kind here-after verbish	13	-38
kind here-after word	-17
kind here-after work		43	22
kind here-before area		-78
kind here-before defect			-69
kind here-before fixture	26	33	40
kind here-before material	30	22	18
kind here-before part	33	14	36
kind here-before size	-15		57
kind here-before surface		24
kind here-before tells	-38
kind here-before tool	-13
kind here-before verbish	-12	88	14
kind here-before word	-12		16
kind material	12
kind part	17	20	19
kind surface		13
kind tells	-25
kind word	-13	-14
kind work	-16
lead a -1	27
lead a -2	-25
lead a -3	-54
lead a -4	-16
lead a here-after	18
lead a here-before	45
lead area -1	-13
lead area here-after	-18
lead area here-before	28
lead fixture -1	-14
lead fixture -2	-12
lead fixture here-before	31
lead material -1	20
lead material here-after	-42
lead material here-before	26
lead number -2	47
lead number here-after	-63
lead number here-before	-13
lead part -1	19
lead part -2	-19
lead part -4	-14
lead part here-after	-19
lead part here-before	22
lead quantity -1	75
lead quantity -4	-24
lead quantity here-after	-58
lead quantity here-before	66
lead role here-after	93
lead size -1	-66
lead size here-after	18
lead size here-before	66
lead surface -1	-58
lead surface -2	43
lead surface -4	-15
lead surface here-before	33
lead that here-after	-23
lead the -1	48
lead the -2	-41
lead the -3	20
lead the -4	-12
lead the here-after	36
lead the here-before	-31
lead verbish -1	18
lead verbish -3	25
lead verbish -4	42
lead verbish here-after	-35
lead verbish here-before	22
lead word -1	27
lead word -2	25
lead word here-after	-24
led none far		-19	-13
led none far+here	-14
led none here	17
led none none 0 outside 1	-12	-55	-25
led none none 0 outside 2	19
led none none 0 outside 3	24		-19
led none none 0 outside 4		19
led none none 1 outside 0	33		-12
led none none 1 outside 2	-22	-13	-13
led none none 1 outside 3		-24
led none none 1 outside 4		-12	-17
led none none 2 outside 0	26
led none none 2 outside 1	-15
led none none 2 outside 2		-13
led none none 2 outside 4	-13	28
led none none 3 outside 0	22	-22
led none none 3 outside 1	-13	23
led none points 0 outside 1		-20	-20
led none points 0 outside 2		-12	-16
led none points 0 outside 3		-24
led none points 1 outside 1		-14	-21
led none points 1 outside 2		-19
led none points 1 outside 3			-17
led none points 1 outside 4			-14
led none points 2 outside 0	-57
led none points 2 outside 1	-47
led none points 2 outside 2		19
led none points 2 outside 3		-20
led none points 3 outside 0		-15	-28
led none points 3 outside 1		-12	-23
led none points 3 outside 2		-26	31
led none points 3 outside 4		62
led turn far			-17
led turn here			18
led turn none 0 outside 1		45	25
led turn none 0 outside 2		-28	-17
led turn none 0 outside 3		32
led turn none 0 outside 4		-39
led turn none 1 outside 0		62	37
led turn none 1 outside 1		-22
led turn none 1 outside 2			-25
led turn none 1 outside 3			-30
led turn none 1 outside 4		-16	-32
led turn none 2 outside 0		12	17
led turn none 2 outside 1		-34
led turn none 2 outside 2		13	-25
led turn none 2 outside 3		-17	-36
led turn none 2 outside 4			12
led turn none 3 outside 0		15
led turn none 3 outside 1		-46
led turn none 3 outside 2		13	-20
led turn none 3 outside 3		-23
led turn none 3 outside 4		-12
led turn pair		14
led turn points 0 outside 1			38
led turn points 0 outside 2		28	-20
led turn points 0 outside 3		26
led turn points 0 outside 4		18	-20
led turn points 1 outside 0			-15
led turn points 1 outside 1		36	24
led turn points 1 outside 2		16	46
led turn points 1 outside 3			-27
led turn points 1 outside 4		-15
led turn points 2 outside 0			36
led turn points 2 outside 1		-36
led turn points 2 outside 2			29
led turn points 2 outside 3		-41
led turn points 3 outside 0			21
led turn points 3 outside 1		-15	-22
led turn points 3 outside 2		-34	-21
led verb here			17
led verb none 0 outside 1		58	34
led verb none 0 outside 2		-13
led verb none 0 outside 3		-15
led verb none 0 outside 4		-26
led verb none 1 outside 0		51	39
led verb none 1 outside 1			-21
led verb none 1 outside 2		-16
led verb none 1 outside 3			17
led verb none 1 outside 4		-25	-22
led verb none 2 outside 0		53	27
led verb none 2 outside 1		-22	-15
led verb none 2 outside 2		-17	15
led verb none 2 outside 3		12
led verb none 2 outside 4		-17	54
led verb none 3 outside 0		31	13
led verb none 3 outside 1		-25	-34
led verb none 3 outside 2		40	42
led verb none 3 outside 3			36
led verb none 3 outside 4		-24	-12
led verb pair		38	30
led verb points 0 outside 1		23	-30
led verb points 0 outside 2			15
led verb points 0 outside 3		20	46
led verb points 0 outside 4		-24	23
led verb points 1 outside 0			-16
led verb points 1 outside 2		27	15
led verb points 1 outside 3			22
led verb points 2 outside 0			-14
led verb points 2 outside 2		19
led verb points 2 outside 3		38
led verb points 2 outside 4		-25
led verb points 3 outside 0		14
led verb points 3 outside 1			-12
led verb points 3 outside 2		33
led verb points 3 outside 4		-28
lemma be object	-30
lemma be subject	33
lemma crack subject	34
lemma drip object	15
lemma get object	-33
lemma get subject	61
lemma go object	-38
lemma go subject	-12
lemma have subject	-22
lemma have subject-late	22
lemma leave object	15
lemma sit object	-31
lemma stick subject	28
lemma trip subject	-64
number many many		79	97
number many one		-28	-85
number none many		19
number one many		-21
number one one			18
opens CONJ		-17	14
opens COP		-59
opens DET		32
opens NEG		-22
opens OPR		50	-38
opens PREP	-22	-21
opens PRON		-22	-14
opens Q0		41
opens Qlength		-59	-23
opens Qpack		-39
opens SUB		-19	-23
opens Vmeasurei	-12
opens Vmoveb		-46	-13
opens Vmovep	-29		-55
opens Vmovepp			20
opens Vmoves	-30	-23
opens Votherb			28
opens Votheri	31	12
opens Vsayb		-19
opens Vseeb		-13
opens Vworkb	-21	-13	-16
opens Vworkbp	-37
opens Vworkbpp		-23	-13
opens Vworki	-40
opens Vworkpp		-13	13
opens Vworks	16
opens tarea	14	23
opens tarea's	37		-20
opens tdefect	-24	-21	-15
opens tdefect's	-12	-16	38
opens tdefectVotherb	-44	15	13
opens tdefectVotheri	-15	-24	-25
opens tdefectVotherp	-14	-60	19
opens tdefectVotherpp	-13	-17	-36
opens tdefectVothers	-19
opens tdefectVworkbpp			14
opens tdefectVworkp			-12
opens tdefectVworkpp		-22	-25
opens tdefectVworks		14	-12
opens tfinish	-25
opens tfinishVworkb	-31
opens tfinishVworkpp	-30	-24
opens tfixture	28	16	31
opens tfixture's	104	21	23
opens tfixtureVworkb		32	-23
opens tmaterial		19
opens tmaterial's	69	16	-18
opens tmaterialVotherb	15
opens tmaterialVworkb	23		18
opens tmaterialVworki	70	26
opens tmaterialVworks			23
opens tpart	19	22	37
opens tpart's	30	18
opens tpartVotherb	30	-29
opens tpartVworkb		29
opens tpartVworks	21	51
opens trole	-50	-33	-23
opens trole's		45	-17
opens tsurface	14	18
opens tsurface's		-33
opens tsurfaceVotherb	-32	-19	-16
opens tsurfaceVworkb		24
opens tsurfaceVworki	-41	-19
opens tsurfaceVworks		-42	18
opens ttool	13	-20
opens ttool's	71	-23
opens ttoolVworkb	-16		-61
opens ttoolVworks	-35
opens twork	-13	37
opens w	-26	-22	-16
opens w's		-44
opens wed	-28
opens wing			-23
opens wly		-50
opens-with -1	-22
opens-with -2	-14
opens-with -4	-17
opens-with here-after	38
order before here			36
order before pair			32
order behind here			-13
order behind pair		65
outside 0 lacks none 0		23
outside 0 lacks none 1	33	57	30
outside 0 lacks none 2	26	38	21
outside 0 lacks none 3	22	12
outside 0 lacks points 1			-20
outside 0 lacks points 2	-57
outside 0 lacks points 3			-17
outside 1 lacks none 0	-12	19	18
outside 1 lacks none 1		-16	-26
outside 1 lacks none 2	-15	-33	-21
outside 1 lacks none 3	-13	-17	-27
outside 1 lacks points 0			-37
outside 1 lacks points 2	-47	-17
outside 1 lacks points 3		-20	-44
outside 2 lacks none 0	19	-28	-15
outside 2 lacks none 1	-22	-24	-15
outside 2 lacks none 2		-20
outside 2 lacks none 3		31	17
outside 2 lacks points 1			30
outside 2 lacks points 2		29
outside 2 lacks points 3			16
outside 3 lacks none 0	24		-21
outside 3 lacks none 1		-27
outside 3 lacks none 2		13	-20
outside 3 lacks none 3		-32	31
outside 3 lacks points 0			38
outside 4 lacks none 0		-18
outside 4 lacks none 1		-34	-43
outside 4 lacks none 2	-13	14	54
outside 4 lacks none 3		-34	-18
outside 4 lacks points 0		-17	16
outside 4 lacks points 1		-17	-16
outside 4 lacks points 2		-17
outside 4 lacks points 3		43
pair by a	-14
pair by about	-20	-18
pair by above	-39
pair by after	16	-21
pair by all	37	-44	14
pair by along	-16
pair by an	-57
pair by and	-14	-25
pair by another	37
pair by are	21	19	72
pair by around	28		33
pair by as	-29
pair by back		-32	-28
pair by bad	-31
pair by be	37	74
pair by been	-14
pair by before		-33
pair by behind	56	21
pair by both	55		-42
pair by box	57
pair by by		17	26
pair by came	-33	-23	22
pair by comes	-46
pair by done			21
pair by down	-21	-38	-34
pair by dumps	-25
pair by each	-25
pair by end	15
pair by every	-35
pair by except	49
pair by for	35	-19	14
pair by from		-13	50
pair by front	-29
pair by gone	60
pair by got	-13	65	-68
pair by had	-32		58
pair by hanging	-14
pair by has	12		33
pair by have	30
pair by her	78
pair by house	45
pair by hung	-53		-36
pair by i	18	18	28
pair by in	20		13
pair by into	-27		-45
pair by it	-46	-74	-50
pair by it's	15
pair by its		-35	44
pair by landed	46
pair by left	32
pair by like	-12
pair by mark	-13	-50	14
pair by me	64
pair by my	30	23
pair by near	28
pair by need		49
pair by needs	55
pair by no	-40		19
pair by not		-17
pair by now	-14
pair by number	26	-18	55
pair by of		59
pair by off	13		-33
pair by old	46
pair by on	42	22	40
pair by only	-37
pair by out	-27	-26	-12
pair by over	17	29	-58
pair by pulled	-26
pair by put	-62
pair by quantity	-17	-53
pair by reads	20
pair by right	-64
pair by round	-12
pair by set	-23		43
pair by size	-50
pair by so	-25
pair by still	62
pair by term		-14	-20
pair by than	-44
pair by that		-19	-22
pair by the	19		26
pair by their	-35
pair by there	-36		17
pair by they	98
pair by this	30
pair by through	-21
pair by till		17
pair by time			-39
pair by to		-22
pair by too	-31
pair by under	24	24	72
pair by up	-31	13	-13
pair by was		-26	-27
pair by way	-14
pair by we	-18
pair by went	-24		42
pair by were	-23
pair by when	-21
pair by where		-29
pair by which	-25
pair by with		-67	-21
pair by x	17
pair false		18	17
pair true	13	-14
part +1 object	-17		-13
part +1 subject		-17	-15
part +1 subject-late	-14	-38	-12
part -1 bare			-21
part -1 object		15
part -1 opens			25
part -1 subject	25	33	40
part -1 subject-late		-21
part -2 bare	-17		-18
part -2 object			-16
part -2 opens	19
part -2 subject	18	17	31
part -2 subject-late	34	22	45
part -3 bare	-18	-28
part -3 object		-12	-21
part -3 subject-late	14	40	36
part -4 object		-13	-15
part -4 opens	14	15
part -4 subject-late	-32		-21
part bare	-18		-13
part bare area		55
part bare defect	-17	-13	-30
part bare finish	27	31
part bare fixture	-13
part bare material		-17	-37
part bare part	16	-23
part bare size	-16	15
part bare surface	-27		-18
part bare tells	38	21	-20
part bare tool	-23	35
part bare verbish		-12	14
part bare word	-15
part bare work		-23
part here-after bare	-39	21	-25
part here-after object	-16
part here-after opens	79	24	39
part here-after subject	59	19	25
part here-after subject-late	-20	47	50
part here-before bare		-16
part here-before object	-71	31	72
part here-before opens	14	26	-81
part here-before subject	21		24
part here-before subject-late	22	44	-23
part object	-28	-12	-18
part object area		-16
part object defect	-18	-12
part object finish	-23	-18	-29
part object fixture	16		14
part object part	23	35	14
part object size	14	-17
part object surface		23
part object tells	-34		18
part object tool	-35	-16	-17
part object verbish	-16	-20	-13
part object word	-15	-17	-19
part object work			12
part opens	28	14
part opens area			18
part opens defect	-21	-17	-13
part opens finish		-20
part opens fixture	20	-12
part opens material	45	35	24
part opens part	20	35	28
part opens size	16	27
part opens surface	36
part opens tells	32	-26
part opens tool	23	-21	-17
part opens verbish	13	26	21
part opens work			14
part subject	21		22
part subject area	27		-32
part subject defect	-61	-23	13
part subject finish	14	-38
part subject fixture	40	37	36
part subject material	25	16	19
part subject part			12
part subject size	-22	-17	32
part subject surface	31
part subject tells	-39	-25	-36
part subject tool	51	-13
part subject word			23
part subject work			-30
part subject-late area	12		-13
part subject-late defect		21	-40
part subject-late finish	-14		46
part subject-late material	16	29	38
part subject-late part	-16		12
part subject-late verbish	34
part subject-late word		17	-17
person	-44		-13
phrase nouns 1		20
phrase nouns 2		48	16
phrase nouns 3		13
phrase opens a		-23
phrase opens all			15
phrase opens and			14
phrase opens anything		-16
phrase opens at		-29	-27
phrase opens both			23
phrase opens for		-21	23
phrase opens from		-56
phrase opens it		-38	-14
phrase opens mark			-22
phrase opens me		62
phrase opens new		35	-28
phrase opens nothing		30
phrase opens out		-47	-24
phrase opens quantity			-15
phrase opens term		14
phrase opens that		-17	-26
phrase opens the		39	18
phrase opens those		19
phrase opens to			-37
phrase opens up			28
phrase opens with			29
phrase points it 0		-24	-32
phrase points it 1			-13
phrase points it 2		48
phrase points nothing 1		13
phrase points nothing 2		42
phrase points one 0			17
phrase points one 1		65	34
phrase points that 0		-17
phrase points that 1		19
phrase size 0		25
phrase size 2		14
phrase size 4		25	17
phrase size 5		42
phrase size 6			-17
phrase size 7		22
phrase subject and behind copula		-21
phrase subject and behind modal		15
phrase subject and behind present		39
phrase subject modal		19
phrase subject owed		42
phrase subject past		18
phrase subject present		-25
points both -2			52
points both here-after			-40
points both here-before			47
points both object			-38
points both subject			62
points em -1		97	39
points em -2			-54
points em -3		-39
points em -4		-31	48
points em bare			-39
points em opens			25
points em subject		19	53
points em subject-late			-54
points it +1		-30	-22
points it -2			41
points it -3		18
points it -4		-15
points it bare		-49	-18
points it here-after		-35	-77
points it here-before			61
points it object		-33	-21
points it subject		29	29
points it subject-late			29
points none +1			-15
points none -1			14
points none -4			-24
points none bare			-13
points none here-after			15
points none here-before		22	16
points none object		-16	-16
points none opens		16
points none subject			18
points none subject-late		15
points one +1		-24
points one -1		91	23
points one -2		-23	69
points one -3		-28	-62
points one -4		27	-36
points one bare			21
points one here-after		-22	-22
points one here-before		14
points one object		13	-72
points one opens		60
points one subject			12
points one subject-late		-43	66
points that +1		-23	-36
points that -1		24	43
points that -2			-43
points that here-after		52	59
points that here-before			18
points that object		15
points that opens		-15	-26
points that subject			32
points them -1		99
points them -3		36
points them -4		-77	-28
points them bare		-27
points them here-after		20
points them object		66	31
points them opens		-19
points them subject		-15	-25
points them subject-late		43
points they +1		-35
points they -2		39
points they -4		-31
points they bare		12
points they here-after		22
points they here-before		65
points they object		-15	54
points they subject		22
points they subject-late		16
points those +1		-34
points those -1		-27
points those -4		48
points those bare		91
points those object		-32
points those opens		12
points those subject		-38
points those subject-late		57
prep about	-48	12
prep above	-13	-58	-31
prep after	-29	-60	-23
prep along	49	-22	34
prep around	42
prep at	-27		-20
prep before		-50	-13
prep behind	17	21	-29
prep below	-89
prep by	-39	-30	-57
prep down	39	-17	-54
prep for		25	-30
prep from	-25	-39	-36
prep here-after after		-74
prep here-after at	-31		-29
prep here-after behind	21
prep here-after by	-21
prep here-after for	-65	43	-45
prep here-after from	-37	-39	-45
prep here-after in	37
prep here-after of	24	58	25
prep here-after off	61	28	13
prep here-after on	21		16
prep here-after over	48
prep here-after to		27	-17
prep here-after under	-21
prep here-after with	-50		-58
prep here-before at	17
prep here-before by	-101
prep here-before in	-14		25
prep here-before of	54		-75
prep here-before on	-23
prep here-before to		75
prep in		-14	-13
prep into	-63	12	-32
prep of			-14
prep off	59	40
prep on			-21
prep other about		-35
prep other above		-60
prep other after			-19
prep other along	52	-13	20
prep other at	-28	-17	-16
prep other before		-86
prep other behind		18	-41
prep other between		-17
prep other by	-19	-29	-65
prep other down	56	-12	-61
prep other for	19	15	-16
prep other from	-16	-42	-27
prep other in	-21		-23
prep other into	-47	24	-13
prep other of	-14		-12
prep other off	40	35	-22
prep other on	12		-31
prep other out		-15	-22
prep other over		-19	-45
prep other through	-23
prep other to	-36	-28	-17
prep other toward	-72
prep other under	-21	-36	-17
prep other up	24	24	13
prep other with	-16	-25	-21
prep out	-49		-16
prep over	21	-14	-51
prep past	-22
prep through	54	-19	73
prep to	-17		-16
prep toward	-81	-48
prep under	-23	-36	-16
prep up	31	22
prep with	-20	-21	-38
prep without	-30	14
rank after 1	-12
rank after 2	-16	-12	-15
rank after 3	-39	31	-39
rank before 0	39
rank before 2	-12
rank before 4			15
rule done/none			65
rule lacks none 0			29
rule lacks none 1			15
rule problem/absent	-20
rule problem/defect-before	13
rule problem/defect-in	-25
rule problem/refuses	29
rule problem/unwell	23
rule problem/wrong	35
rule size 4	37		37
rule word 		-17
rule word back	38
rule word bath	17
rule word bedroom	17
rule word ceiling	38
rule word closet	-24
rule word corner	-39
rule word door	12
rule word down		-13
rule word end	26
rule word faucet	-29
rule word finish			41
rule word first		-15	74
rule word floor	26
rule word front	-23
rule word glass	13
rule word go		-14
rule word hall	14		-15
rule word install			33
rule word kitchen	-32
rule word leave		-20
rule word on			45
rule word one		-18	13
rule word post	-14
rule word room	26
rule word shelf	27
rule word smoke	-19
rule word tile	23
rule word valve	12
rule word wall	29
says imperative	19	-17	32
says its verb		-12
says owed			-21
says present	-13
sentences -1	-37	-31	-31
sentences -1 bare	-26	-31	-32
sentences -1 object	-19	-13
sentences -1 opens	-14	-22	-16
sentences -1 subject	-27		-23
sentences -1 subject-late			-26
sentences -2	-12	-33	-39
sentences -2 bare	-14	-21
sentences -2 object		-18	-19
sentences -2 opens		-21	-30
sentences -2 subject	-14	-18	-19
sentences -2 subject-late		31	-16
sentences 1	-17	-23	-22
sentences 1 bare	-17	-18
sentences 1 object		-12
sentences 1 opens	-12	-22	-19
sentences 1 subject		-18	-20
sentences 1 subject-late	-14	-35	-19
size 1	-34	-22	-17
size 1 far+here	13	-24
size 1 here	-13
size 1 outside 1		-12
size 2	17
size 2 far		-12
size 2 far+phrase		-15	-16
size 2 here	30		18
size 2 outside 0	17	16
size 2 outside 2		-13
size 2 phrase		14
size 3	13	12
size 3 far		15
size 3 far+phrase			14
size 3 here	39	21	34
size 3 outside 0	16	14	29
size 3 pair	13	27	44
size 3 told		-14	-24
size 4	14
size 4 far		-23
size 4 here	117	32	41
size 4 outside 0	24	44	12
size 4 outside 1			-12
size 4 outside 2		20
size 4 outside 3	15	-25	-18
size 4 pair	14	79	29
size 4 phrase			-12
size 5			25
size 5 far			34
size 5 far+here	-12		23
size 5 far+phrase			28
size 5 here	86		34
size 5 outside 0	41	34
size 5 outside 1		14
size 5 outside 2			12
size 5 outside 3	-23		67
size 5 outside 4		-18
size 5 pair	24	29	-14
size 5 phrase		29
size 5 told		-32	-20
size 6		19
size 6 far	31	-32	51
size 6 far+here	-26	-41	-30
size 6 far+phrase		83
size 6 outside 0			-13
size 6 outside 1			13
size 6 outside 2		51
size 6 outside 3		45	-18
size 6 outside 4		-15	22
size 6 phrase			-12
size 6 told		-26
size 7	-15
size 7 far	-12	-20
size 7 far+here	-26	35	-36
size 7 far+phrase		-40	66
size 7 outside 0	18	16
size 7 outside 3		-14	64
size 7 outside 4	-28	-20	-23
size 7 pair	15		-15
size 7 phrase		22
size 7 told		-24
sort CONJ		-16	26
sort COP		-47
sort DET		37
sort MOD		21
sort NEG		-23	-19
sort OPR		60	-24
sort PREP		22	13
sort PRON		16	-20
sort SUB			-22
sort Vmeasurei	-29		-33
sort Vmeasurepp		18
sort Vmoveb	23
sort Vmovep	-15
sort Vmovepp			14
sort Vmoves			-48
sort Vneeds	-14	-35
sort Votheri	35	20
sort Votherp	-18	28	-14
sort Vsayb	-64	-17	19
sort Vseeb	-12	-20
sort Vworkb		25
sort Vworkbp	28
sort Vworkbpp	-39	-39
sort Vworki	-25	61	23
sort Vworkpp	-12		16
sort Vworks			-33
sort w	-12		-14
sort w's		-28
sort wed	-23	14	33
sort wing	-29		-23
sort wly		-60	-49
stands after		-19	-18
stands after 0 of 0	-29	-25	-22
stands after 0 of 1			-16
stands after 1 of 0		-30	-24
stands after 2 of 0		-23	-13
stands after 2 of 1	-17
stands after 2 of 2	-15
stands after has 0	-46	-43	-33
stands after has 1		-14	-20
stands after has 2	-13
stands after points em			-17
stands after points it		-29	-25
stands after points it's	-23	-23	25
stands after points nothing		-16	-15
stands after points one			-27
stands after points that		-12	-27
stands after points that's		-19	-24
stands after points them		-21
stands after points they		-24
stands after points those		-31
stands before 0 of 0		16	33
stands before 0 of 2	13	-14	-12
stands before 0 of 3		-13
stands before 1 of 0	-56		28
stands before 1 of 1	27
stands before 1 of 2	-12
stands before 1 of 3			-19
stands before 2 of 0	88	17	-20
stands before 2 of 1		-14
stands before 2 of 2	-13
stands before 3 of 0		31
stands before 3 of 1	-42	-14
stands before 3 of 2			15
stands before 3 of 3			30
stands before 4 of 0		-43	-13
stands before 4 of 1	-15	29	12
stands before 4 of 2	-12	25	20
stands before 4 of 3			71
stands before has 0	67	33	31
stands before has 1	-12		-12
stands before has 3			26
stands before points em		30	-13
stands before points it			32
stands before points it's	-39	-48	36
stands before points one		75
stands before points that			18
stands before points that's		46	42
stands before points them		50	26
stands before points those		64
stands here		13	16
stands here 0 of 1	19	21	23
stands here 0 of 2	28		19
stands here 0 of 3	64	30
stands here 1 of 2	-16
stands here 1 of 3	-12		30
stands here 2 of 3	-26	-21	-15
stands here 3 of 3	-45	18	-54
stands here has 1	19	21	23
stands here has 2	12		12
stands here points both			14
stands here points em			35
stands here points it		-19
stands here points it's	52		-60
stands here points nothing		20	16
stands here points one		-43
stands here points that		25	32
stands here points that's		44	-18
stands here points them		17	-18
stands here points they		35
stands here points they're		19
subject none +1	-18
subject none -2	12
subject none here-before	18
subject own -1	15
subject own here-after	-20
subject own here-before	22
subject person +1	-43
subject person -1	-27
subject person -2	-14
subject person -3	-26
subject person -4	12
subject person here-after	28
subject person here-before	46
subject pointer +1	-36
subject pointer -1	30
subject pointer here-before	-81
subject tells here-before	-40
told as done after		-24
told as fixed after		-38	-25
told as fixed before		-25	54
told as fixed here		-66
told as have before		42
told as have here	-47
told as need after	-12	-15
told as need before		-42	-51
told as need here	59	50	12
told as open after		-28	-33
told as open before		20
told as open here			25
told as ordered before		17
told as used after	-13	19
told as used before	-21		18
told as used here			13
told done 0 near		-13
told done 0 touches		16
told done 1 near		-18
told fixed far		-15	-32
told fixed near			-28
told fixed over		14
told fixed touches			-16
told open far		-15	-12
told open touches			18
told problem 0 far		-12
told problem 0 near			-12
told problem 0 over		14
told problem 1 far		-13	-16
told problem 1 near		-20	-13
told problem 1 over			19
told size 3		-16	-25
told size 4		-14
touches-after	-22
touches-before	23
unit none defect	-22
unit none finish	-14
unit none fixture	25
unit none part	18
unit none tells	-25
unit none word	-12
unit none work	-15
use buy	-13	16	19
use have			32
use measure	-30
use move	-23		-15
use need		29
use other			19
use say	-24	-20
use see		39	-32
use use	25
verb behind #		42	33
verb behind a		38	-28
verb behind all			-22
verb behind already			-12
verb behind are			54
verb behind be		97
verb behind been			56
verb behind can		-13
verb behind can't		23
verb behind don't		46
verb behind get		106
verb behind he'll		30
verb behind i		-16	30
verb behind i'll		29
verb behind i've			83
verb behind is		-54	41
verb behind it		-33	-25
verb behind it's		-24	65
verb behind must		-27
verb behind needs		45
verb behind no		-22
verb behind nobody		35
verb behind not		63
verb behind quantity		-50
verb behind she		-79
verb behind should		30
verb behind still		-15
verb behind term		-37	13
verb behind that's			-21
verb behind the		-34	-25
verb behind they		-36
verb behind they're		-22
verb behind to		68	46
verb behind wants		56
verb behind we		32	19
verb behind will		56
verb behind you		-22
verb form b main		32	36
verb form b side			-32
verb form bp main		54
verb form bp side			-36
verb form bpp main		41
verb form bpp side		30	48
verb form i main		44
verb form i side		25	-38
verb form p main		-26	46
verb form p side		-72
verb form pp main		13	30
verb form pp side		-22	30
verb form s main		-15	29
verb form s side		36	16
verb lemma add imperative		37
verb lemma ask imperative		29
verb lemma bolt past			-13
verb lemma bring imperative		38
verb lemma call imperative		43
verb lemma check imperative		42
verb lemma clean past			37
verb lemma close present		-39
verb lemma cut copula			26
verb lemma cut imperative		66
verb lemma cut none		40	52
verb lemma cut owed		35
verb lemma cut past			-24
verb lemma do copula			44
verb lemma do none			-30
verb lemma drill past			-49
verb lemma dry copula			34
verb lemma dry imperative		-42
verb lemma fill past			53
verb lemma finish copula			-13
verb lemma finish past			30
verb lemma finish present			-56
verb lemma fix past			82
verb lemma fre past			25
verb lemma get imperative		-53
verb lemma get owed		-79
verb lemma glue copula			51
verb lemma glue past			38
verb lemma go copula		-56
verb lemma go modal		-71
verb lemma go none		16
verb lemma go owed		-111
verb lemma go past			-91
verb lemma go present		-43
verb lemma hang copula			37
verb lemma hang past			38
verb lemma hang present		-14
verb lemma hold past			-34
verb lemma leave imperative		-78
verb lemma leave past		-74
verb lemma look modal		46
verb lemma make present		-34
verb lemma move modal		28
verb lemma order imperative		22
verb lemma pack past			51
verb lemma pull past			22
verb lemma put imperative		-31	57
verb lemma put modal		27
verb lemma put none		-13
verb lemma put past		41	-33
verb lemma replace past			35
verb lemma roll past			27
verb lemma run copula			-34
verb lemma run imperative		38
verb lemma sand imperative		18
verb lemma screw past			-53
verb lemma seal past			34
verb lemma see imperative		-61
verb lemma set copula			34
verb lemma set none			56
verb lemma set past			40
verb lemma shim past			12
verb lemma snug past			24
verb lemma swap imperative		37
verb lemma swap past			47
verb lemma tape past			24
verb lemma tell imperative		-27
verb lemma tell past		-44
verb lemma test past			15
verb lemma tighten past			49
verb main		27	30
verb main imperative		42	61
verb main modal		24
verb main owed		41
verb main past		-40	26
verb main present		17	34
verb no rule		34	27
verb none		-29	-27
verb none of 0			-19
verb none of 1		-35	-31
verb none of 2		-28	-29
verb none of 3		-25	-21
verb none turn		-29	-17
verb nth 0		25	30
verb nth 0 of 1		30	30
verb nth 0 of 2			23
verb nth 0 of 3		24	49
verb nth 1 of 3			-50
verb nth 2		21	-18
verb nth 2 of 3			-17
verb of rule		27	14
verb of rule come		-57
verb of rule do		15
verb of rule send		82
verb other rule		-28	-33
verb particle			-15
verb same rule		46	36
verb says add		48
verb says ask		40
verb says book		-58
verb says bring		38
verb says call		58
verb says caulk			44
verb says change		40	34
verb says check		49
verb says clean			24
verb says close		26
verb says cut		26	53
verb says do		-71
verb says drill			-18
verb says dry		-33	-53
verb says fill		44	70
verb says finish		45	-25
verb says fit			16
verb says fix		43	86
verb says flush		39
verb says get		-93
verb says glue		34	40
verb says go		-18	-67
verb says go back		-45
verb says go down		-69
verb says go on		-65
verb says hang			50
verb says hold			-26
verb says install			45
verb says land		-15
verb says leave		-104	-26
verb says level			-68
verb says look		85
verb says make		-31
verb says miss		-54
verb says mount			24
verb says move		44	-12
verb says open		-65	-18
verb says owe		33
verb says paint		80
verb says patch		46	82
verb says pick		30
verb says prime		17	38
verb says pull		-17
verb says put		14	22
verb says put in		-106	-93
verb says redo		71
verb says replace		46	38
verb says reset			62
verb says return		68
verb says rip		15
verb says sand		47	33
verb says screw			-60
verb says scribe		56
verb says seal		37	42
verb says send		34
verb says set		39	61
verb says shim			20
verb says show up		-23
verb says sit		-86
verb says snug			21
verb says start		49
verb says strip		33
verb says swap		63	49
verb says take			-15
verb says tape			34
verb says tell		-39
verb says test		67	50
verb says tighten			48
verb says top		-27	-60
verb says trim		14
verb says use			-37
verb side		12
verb side copula			23
verb side imperative		17
verb side none		22
verb side past		22
verb side present			-44
verb term defect		-79	-97
verb term finish			-25
verb term material		44
verb term part		47
verb term tool		35
verb turn back copula		50	-48
verb turn back owed		-29
verb turn back past		-38	-47
verb turn back present		-51
verb turn come back			-59
verb turn done copula			-33
verb turn done none			-63
verb turn down copula			58
verb turn finish			-59
verb turn in copula		-135
verb turn in none		-20
verb turn install		18	16
verb turn new copula			-82
verb turn new imperative		73
verb turn new modal		43
verb turn new none		34	110
verb turn new owed		-35
verb turn new past			79
verb turn new present		-84
verb turn off copula			-47
verb turn on copula		14	52
verb turn on none		61	-51
verb turn on present		46
verb turn out copula			-53
verb turn replace			70
verb turn take back		-18	-52
verb turn take off		41	-63
verb turn take out			-59
verb turn up copula		-16	31
verb turn up none		-23	90
verb use buy main		22
verb use buy side		-16
verb use measure main			-25
verb use measure side		-48	-51
verb use move main		-87	-47
verb use move side		-55	-47
verb use other main		-19
verb use other side		-13	-13
verb use say main		24	45
verb use see main		36	38
verb use see side		84
verb use use main			-37
verb use work main		53	33
verb use work side		29	19
where +1	-16	-17	-16
where -1	12	15	17
where -4			-18
where here-before	18	17	22
whole after at defect	22
whole after from defect	44
whole after in defect	23
whole after quantity defect	-27
whole after quantity material	-21
whole after quantity part	-34
whole after term material	25
whole after term part	36
whole after term surface	29
whole after term word	21
whole after word area	23
whole after word defect	-13
whole after word material	57
whole after word surface	30
whole after word verbish	-13
whole article a		28
whole article none		-15
whole article other		-14
whole article the		23	15
whole behind about -3	-29
whole behind at +1	-27
whole behind at -1	-21
whole behind at -3	-47
whole behind at -4	-23
whole behind at here-after	12
whole behind at here-before	28
whole behind behind -2	-20
whole behind behind here-before	12
whole behind by -1	-40
whole behind by -2	-16
whole behind by -4	-13
whole behind down here-before	-22
whole behind end +1	-15
whole behind end -1	-24
whole behind end -2	-16
whole behind end -3	-14
whole behind end -4	-16
whole behind end here-before	22
whole behind for -4	33
whole behind from +1	-16
whole behind from -1	-27
whole behind from -2	-44
whole behind from -3	58
whole behind from -4	-12
whole behind from here-after	30
whole behind from here-before	51
whole behind in -3	-24
whole behind in -4	-19
whole behind in here-before	39
whole behind mark -1	-56
whole behind mark here-before	51
whole behind number -2	-28
whole behind off -1	65
whole behind off -3	15
whole behind off here-before	-39
whole behind on +1	-13
whole behind on -1	-17
whole behind on -2	-28
whole behind on -3	42
whole behind on -4	-24
whole behind out +1	56
whole behind out -2	-26
whole behind out -3	-27
whole behind out -4	-12
whole behind out here-before	-17
whole behind quantity +1	-35
whole behind quantity -1	59
whole behind quantity -2	14
whole behind quantity -3	-37
whole behind quantity here-before	38
whole behind term +1	-13
whole behind term -1	-22
whole behind term -2	18
whole behind term -3	20
whole behind term -4	-21
whole behind term here-after	12
whole behind up -1	29
whole behind up here-before	-14
whole behind with +1	-12
whole behind with -2	-22
whole behind with -4	-15
whole behind with here-after	-17
whole behind word +1	-13
whole behind word here-before	13
whole between are	-12
whole between get a	15
whole between has	63
whole between has a	-17
whole between have	-19
whole between is	-21
whole counted bare	15	-12	-21
whole counted count	45
whole counted length		-36	-16
whole counted pack	-22	-13	-42
whole counted pressure	-21
whole does ask defect		-15
whole does ask fixture		-36
whole does ask material		26
whole does ask part		-20
whole does ask word		-15
whole does be area			-16
whole does be finish			-16
whole does be fixture		-58	-31
whole does be material		16	-28
whole does be part		46	-33
whole does be tells			-23
whole does be verbish			-14
whole does bring material		27
whole does bring part		-22
whole does bring word		30
whole does call defect		-20
whole does call material		-13
whole does call word		-17
whole does clean part			-34
whole does come fixture		26
whole does come material		24
whole does come part		-19
whole does come surface		-23
whole does come word		26
whole does cut defect			23
whole does cut material		37	34
whole does cut word		-51
whole does do fixture		60
whole does do material		-44
whole does do part		45
whole does do surface		-31
whole does do word		-15
whole does finish material			70
whole does finish surface			79
whole does get area			-24
whole does get defect		-19
whole does get fixture		17	-19
whole does get material			-61
whole does get part		80
whole does get surface		-49	59
whole does get verbish		-35	-21
whole does get word		-42
whole does go area		40
whole does go defect		-16
whole does go fixture		-36
whole does go material		49	22
whole does go part		-39
whole does go surface		-31
whole does go verbish		-37
whole does go word			-18
whole does hang material			37
whole does hang part			-23
whole does hang surface			-28
whole does hang word			-16
whole does i'll word		-32
whole does leave material		47
whole does leave part		-17
whole does leave word		-30
whole does let word		-55
whole does need area		-68
whole does need defect		-32
whole does need fixture		54
whole does need part		72
whole does need surface		-19
whole does need verbish		-56
whole does need word		70
whole does open word		-16
whole does pull area			-19
whole does pull part			18
whole does pull word			-28
whole does put area			-33
whole does put defect			-21
whole does put material		31	66
whole does put part			82
whole does put surface			-23
whole does put word		-42	-18
whole does replace material			-26
whole does replace part			36
whole does run material			-55
whole does run word			-25
whole does sand defect		-46
whole does sand material		-36
whole does sand word		-39
whole does say material		29
whole does say part		17
whole does say surface		-32
whole does seal word			-15
whole does sit material		-18
whole does sit word		-16
whole does swap material		70
whole does swap word		-17	-30
whole does take word		38
whole does tell material		-37
whole does want defect		-24
whole does want material		-35
whole does want part		-60
whole does want surface		33
whole ends Nlabel		20	-12
whole ends PREP	-12
whole ends Vmoveb		31	-23
whole ends Vmoves	-14	-22
whole ends Vneedb		12
whole ends Vneeds	28	12	-29
whole ends Votherb	-36
whole ends Votheri		-40
whole ends Vsayb	-23
whole ends Vworkb			-16
whole ends Vworkbpp	-23
whole ends Vworkpp			-14
whole ends Vworks		17	34
whole ends tarea	15	16
whole ends tarea's	-15	15
whole ends tdefect	-15		-12
whole ends tdefect's	17
whole ends tdefectVotherb	-23		87
whole ends tdefectVotheri		-38	-26
whole ends tdefectVotherp	-22
whole ends tdefectVotherpp	-22	-31	-34
whole ends tdefectVothers	-17	-13
whole ends tdefectVworkbpp		46	-29
whole ends tdefectVworki		-30	-16
whole ends tdefectVworkp		-39	-23
whole ends tdefectVworkpp		-14	-17
whole ends tdefectVworks	-16	-16
whole ends tfinish	-13	-26
whole ends tfinishVworkb	-16	36
whole ends tfixture	16
whole ends tfixture's	-19	13	16
whole ends tfixtureVworkb	-20		-24
whole ends tmaterial			16
whole ends tmaterial's		80
whole ends tmaterialVworki		55	-37
whole ends tmaterialVworks			-20
whole ends tpart		13	12
whole ends tpart's			25
whole ends tpartVotherb	-15
whole ends tpartVothers	53	-42
whole ends tpartVworkb	-18	14	24
whole ends tpartVworks			-12
whole ends tsurface			17
whole ends tsurface's		25	-23
whole ends tsurfaceVotherb		-20
whole ends tsurfaceVworkb		-27	-13
whole ends tsurfaceVworks		-21	25
whole ends ttool			-12
whole ends ttoolVworkb	32	12
whole ends ttoolVworks	-29
whole ends twork	-14	35
whole ends verb		-12
whole ends w's	-24	-25
whole ends wed			27
whole ends wing	-47		-19
whole far after 0			24
whole far after 1	31	39
whole far after 13+		-20	-12
whole far after 2	-25
whole far after 5-7			-12
whole far after 8-12	-15		-18
whole far before 0			18
whole far before 1	21	-13
whole far before 2	28		-17
whole far before 5-7			17
whole far before 8-12		12
whole figure-between	43
whole flawed		22	23
whole frame copula +1		-34	-17
whole frame copula -1		30	-25
whole frame copula -2		22	-15
whole frame copula -3		-28
whole frame copula -4	-16	-17
whole frame copula area		28
whole frame copula defect		-36	-13
whole frame copula finish			-12
whole frame copula fixture		28
whole frame copula here-after	-15	-38	18
whole frame copula here-before		22	27
whole frame copula material		-17
whole frame copula part			-15
whole frame copula size		-19
whole frame copula surface		31	12
whole frame copula tells			-32
whole frame copula tool		-18	-14
whole frame copula verbish			12
whole frame copula word		-19
whole frame copula work			-24
whole frame imperative +1		-16
whole frame imperative -1			60
whole frame imperative -2			-53
whole frame imperative -3		-23	-14
whole frame imperative -4	-25		74
whole frame imperative here-after		22
whole frame imperative size		44
whole frame imperative surface		-19	16
whole frame imperative tool		-41
whole frame imperative verbish		-31
whole frame imperative word		-18
whole frame modal +1	-26	-30
whole frame modal -1		34
whole frame modal -2	19
whole frame modal -3	94
whole frame modal -4	-12	-33
whole frame modal defect		-17
whole frame modal finish		-35
whole frame modal fixture		14
whole frame modal here-after		-13
whole frame modal material		20
whole frame modal size		-15
whole frame modal surface		-12
whole frame modal tells		34
whole frame modal tool		32
whole frame modal verbish		-14
whole frame modal word		-20
whole frame none +1	-15		-16
whole frame none -1	21	36	53
whole frame none -2	-18
whole frame none -3		27	-12
whole frame none -4		-19
whole frame none area		-16
whole frame none defect		-12	-12
whole frame none finish		31	-12
whole frame none fixture		-21
whole frame none here-after			36
whole frame none here-before		17
whole frame none material			15
whole frame none part		45	30
whole frame none size		-47	41
whole frame none surface		34	25
whole frame none tells		-33
whole frame none tool		52
whole frame none verbish		39
whole frame none word			12
whole frame owed -2	-21
whole frame owed -3	-31	51
whole frame owed area		54
whole frame owed defect		-26
whole frame owed finish		-18
whole frame owed fixture		33
whole frame owed here-after		51
whole frame owed here-before	56	46
whole frame owed part		51
whole frame owed size		16
whole frame owed surface		32
whole frame owed tells		36
whole frame owed tool		-37
whole frame past +1	-22	-57	-13
whole frame past -1		-32
whole frame past -3	-20	-25
whole frame past -4		-42	-23
whole frame past area			-14
whole frame past finish			-32
whole frame past here-after	44	32
whole frame past here-before	41	42
whole frame past material		27
whole frame past part			20
whole frame past size		-37
whole frame past surface		-65
whole frame past tells			50
whole frame past verbish		-44	-29
whole frame past word		-59	-20
whole frame past work			24
whole frame present +1	-30	30
whole frame present -1	-12	-14	24
whole frame present -2		21	-25
whole frame present -3		-30	24
whole frame present -4	-14
whole frame present area		-19	29
whole frame present defect			-13
whole frame present fixture		22	46
whole frame present here-after		27	14
whole frame present here-before	30		38
whole frame present material		27	47
whole frame present part			-13
whole frame present size		31
whole frame present surface		-26	-19
whole frame present tells		-31
whole frame present tool		-15
whole frame present word		-26	-17
whole head air	16		40
whole head anything		-19
whole head attic	-48	-55	-23
whole head b	17		53
whole head back door	-25
whole head backsplash	-12	68
whole head bad	-17
whole head bag	-28
whole head bar		-61	-28
whole head base	43		22
whole head basement	91		-15
whole head bath		13
whole head bathroom	50	-24
whole head bay	32	-23	-32
whole head bedroom	43
whole head bit	-13	17
whole head blinds	53
whole head boards		64	-16
whole head bolts	-13		58
whole head bottom	-36	-50
whole head box	35	-15	30
whole head bracket	-13
whole head breaker	-37
whole head broken	-25
whole head button	-13
whole head c	-22
whole head cabinet	-17
whole head cable	-21		-64
whole head cap		-30
whole head ceiling	25
whole head chimney	-24
whole head chip	-59
whole head clamps	-29
whole head clear	-16	36
whole head closer	-17
whole head closet	-18	25	-35
whole head closet rod	47
whole head co	13
whole head coat		-78
whole head code	12
whole head cold	-31		-12
whole head corner	13	-39	-37
whole head counter	33	76
whole head crack	-18		104
whole head cracked	-14
whole head cut		-13
whole head cut out	-37
whole head dead		-13
whole head deck			67
whole head dimmer	-54	36
whole head dining room	82	48	-29
whole head dishwasher	-31
whole head door	34	24	23
whole head door's	-33	23
whole head doors		33	52
whole head downspout	29
whole head drain		-22
whole head drawer	-38	17
whole head dripping	19
whole head drop	-16
whole head drops		-13
whole head dry	32
whole head duct		-14
whole head edge	-19	-12
whole head epoxy		-55
whole head except	-21	-48
whole head extra	-19
whole head face		-14
whole head falls	-48
whole head fan		-63
whole head faucet			18
whole head filters	32
whole head first coat	-43
whole head flange	32
whole head flashing	14	-14
whole head flat	-17		-15
whole head flex	47
whole head floor	62		46
whole head floor's	85
whole head foam	-17
whole head frame	33
whole head fridge	23		69
whole head front			68
whole head full	-36
whole head furnace	-24
whole head gap		-20
whole head garage	-13	-43	56
whole head gas		-33
whole head gasket		36	-45
whole head glass	31	68
whole head glue	-15	49
whole head goes	-18
whole head grout		-55
whole head hair	-23
whole head hall		60
whole head handle	-25	-26
whole head hatch	-31
whole head height			-36
whole head hole	15	112
whole head holes	20
whole head hose	13
whole head hot	37	43
whole head house		-29	-15
whole head inside	-12
whole head job		49	-14
whole head joint	44
whole head joist	30		-26
whole head joists	-24	-57
whole head kitchen		64	-42
whole head kitchen faucet	-42
whole head latch	-12
whole head layers	-63
whole head leak			-23
whole head leg	-12
whole head light	30	-51	-50
whole head living room			-14
whole head lock	-14
whole head loose		-17	-15
whole head me	17	-16
whole head meter	18	-53	-21
whole head middle		-24
whole head missing		-23	-19
whole head mud		21
whole head nail	12
whole head needs	-20
whole head niche	-15
whole head number	41		-27
whole head nut	-18
whole head o	-13
whole head office	-21
whole head opening	23
whole head outlet	76	70
whole head outside	-17	-18
whole head paint	28	-39
whole head pan			44
whole head panel	24	-26	-40
whole head pantry	-15
whole head paper		-31
whole head piece		26
whole head pipe		68	21
whole head plaster	42
whole head plate	-48	-67
whole head plates	57
whole head post		35
whole head primer		-32
whole head pull		19
whole head pulls		52
whole head quiet	-22
whole head r	-15
whole head rack	-30
whole head radiator	-26
whole head rail		-45
whole head rain	-15	-20
whole head range	-23
whole head reveal	-26
whole head ring	-45
whole head rm	116
whole head rock	-19
whole head roof	111		106
whole head round	-19	39	-35
whole head runs	-16	-12
whole head salon	-33		-43
whole head sand	-12	-43
whole head screen	-16
whole head screw	-29	-24
whole head screws	26		-34
whole head second coat		-32
whole head shelf	-18	22
whole head shop	-46	-28
whole head shot	-25
whole head shower	-36		34
whole head side	-23	-13	-51
whole head sides	-24		-17
whole head siding		100
whole head sill		39
whole head sink		-18	31
whole head skirting	-17
whole head slab	52	99
whole head soft	-22	112
whole head split		46	-29
whole head spot	-73	54
whole head stain	-47	-12
whole head stairs	-20	-40	-41
whole head stone		-40
whole head straight	-20
whole head strike	-39
whole head studs	-20
whole head supposed		21
whole head tape		59	34
whole head temp	-12
whole head template		27
whole head tile		26
whole head tiles	28
whole head toilet	-25	-17
whole head top	29	-23
whole head track	-34
whole head trap	-16	-20
whole head tray		73
whole head treads	-17
whole head trim	46	-24	69
whole head truck	-15	31
whole head tub	68	-72
whole head unit	-43		14
whole head uppers			-36
whole head upstairs	-25	30	13
whole head us		-25
whole head valve	-35	-28
whole head vent	41	22
whole head wall		47	-23
whole head walls	-17	-42	-28
whole head wants	48	-14
whole head washer	-43		-23
whole head water		-60	-94
whole head wax ring	-38
whole head weatherstrip	-26
whole head wet		-31
whole head white		-18
whole head window	41	-37	23
whole head wrong	-16
whole heading	13	15
whole heading +1		13	-27
whole heading -1	36		45
whole heading -2	-16		-36
whole heading -3	17	20	19
whole heading -4	-17		-23
whole heading here-after	24		46
whole is-flaw	-12
whole kind +1 area	-15	27
whole kind +1 defect			-19
whole kind +1 finish		19
whole kind +1 fixture		-26	-24
whole kind +1 material		-16	-16
whole kind +1 part		-18	-17
whole kind +1 size	14	-16
whole kind +1 surface	-14	-26	-13
whole kind +1 tells	-22
whole kind +1 tool		-13
whole kind +1 verbish		-18	-12
whole kind +1 word	-15
whole kind -1 area	19
whole kind -1 defect	-29		-12
whole kind -1 finish	-38	29
whole kind -1 fixture	43	71	58
whole kind -1 material			19
whole kind -1 part	20	29	60
whole kind -1 size	-83	21
whole kind -1 surface		-28
whole kind -1 tells	-26
whole kind -1 tool	56	-49	-20
whole kind -1 verbish	-14	35	-26
whole kind -1 word			-13
whole kind -2 area		22	-12
whole kind -2 defect	-20
whole kind -2 finish		-29
whole kind -2 fixture		22	-22
whole kind -2 material	-18
whole kind -2 part		26
whole kind -2 size	41	-18	44
whole kind -2 surface		-13
whole kind -2 tells	-24	31	-26
whole kind -2 tool			17
whole kind -2 verbish	22	-21	-29
whole kind -3 area	33		-40
whole kind -3 defect	-17	-39	-28
whole kind -3 finish	-14	22
whole kind -3 fixture			26
whole kind -3 material		27
whole kind -3 part			19
whole kind -3 size	-27		-35
whole kind -3 surface		31	19
whole kind -3 tells		-33
whole kind -3 tool	-25	-26
whole kind -3 verbish			13
whole kind -3 word			-13
whole kind -3 work	-14
whole kind -4 area		-17	13
whole kind -4 finish		-25
whole kind -4 fixture	-18	-31
whole kind -4 material			-27
whole kind -4 part			-12
whole kind -4 size	-19	-22
whole kind -4 surface		20	-19
whole kind -4 tells			-17
whole kind -4 verbish	20		12
whole kind -4 word	-14	-23
whole kind -4 work		-24
whole kind area	14
whole kind defect	-16	-12
whole kind finish	-14
whole kind here-after area	18	-40	-15
whole kind here-after defect			21
whole kind here-after finish	-17
whole kind here-after fixture	40	18
whole kind here-after material	31	45	31
whole kind here-after part		66
whole kind here-after size	-36
whole kind here-after surface	20	27	40
whole kind here-after tool		47
whole kind here-after verbish	-30	-13
whole kind here-after word	13	-45
whole kind here-before area			39
whole kind here-before defect	16
whole kind here-before fixture	15	14
whole kind here-before material	21		40
whole kind here-before part		36	18
whole kind here-before size	77
whole kind here-before surface	14	55	18
whole kind here-before verbish	-47	-51
whole kind here-before word	20		-13
whole kind part		14	14
whole kind size			12
whole kind tells	-15		18
whole kind tool			-12
whole kind verbish			-12
whole kind word		-12
whole kind work	-19	36	14
whole lead a -1	73
whole lead a -2	-36
whole lead a -3	-13
whole lead a -4	-24
whole lead a here-after	-25
whole lead a here-before	-16
whole lead area -1	-49
whole lead area -2	12
whole lead area -3	52
whole lead area here-before	24
whole lead fixture -2	-39
whole lead fixture -4	-28
whole lead fixture here-before	43
whole lead material -1	-32
whole lead material -2	-12
whole lead material -3	-35
whole lead material -4	-26
whole lead material here-before	15
whole lead number -2	-19
whole lead number here-before	46
whole lead part -1	-29
whole lead part -3	-30
whole lead part -4	-15
whole lead part here-after	12
whole lead quantity -1	27
whole lead quantity -2	-25
whole lead quantity -3	23
whole lead quantity -4	-25
whole lead quantity here-before	57
whole lead size -1	-92
whole lead size here-before	31
whole lead surface -1	-50
whole lead surface -2	-21
whole lead surface -3	25
whole lead surface -4	16
whole lead the -1	-38
whole lead the -3	16
whole lead the -4	-20
whole lead the here-after	-16
whole lead the here-before	-28
whole lead tool here-before	20
whole lead verbish -2	-19
whole lead verbish -3	-34
whole lead verbish -4	-12
whole lead verbish here-after	-34
whole lead word -4	-19
whole lemma be object	-14
whole lemma drip subject	29
whole lemma get object	-17
whole lemma get subject	-29
whole lemma go subject	-42
whole lemma have subject	56
whole lemma leave object	19
whole number many many		65
whole number many one		-43
whole number one many		-17
whole number one one		24	17
whole opens PREP	-35	-29
whole opens Vmeasurei	14
whole opens Vmovep	-33
whole opens Vmovepp	-17
whole opens Vmoves		-21
whole opens Votherb	-37	-20
whole opens Vworkb	-23	-25	-23
whole opens Vworki			29
whole opens Vworkpp	-26	-12	-19
whole opens Vworks		18	44
whole opens tarea	14
whole opens tarea's	-15
whole opens tdefect	-19
whole opens tdefect's	13
whole opens tdefectVotherb	-30	-21	38
whole opens tdefectVotheri		-39
whole opens tdefectVotherp	-26	-39
whole opens tdefectVotherpp	-22	-31	-34
whole opens tdefectVothers	-17	-19
whole opens tdefectVworkbpp		15
whole opens tdefectVworki		-30	-16
whole opens tdefectVworkpp		-14	-17
whole opens tdefectVworks	-16	-28	-28
whole opens tfinish			-30
whole opens tfinishVworkb		-12
whole opens tfixture	13		30
whole opens tfixture's		18	16
whole opens tfixtureVworkb	-21	17	23
whole opens tmaterial		16
whole opens tmaterial's		57	17
whole opens tmaterialVworkb		44
whole opens tmaterialVworki		51	-42
whole opens tmaterialVworks	21	12	-39
whole opens tpart	14		28
whole opens tpart's			28
whole opens tpartVotherb	-15		-14
whole opens tpartVworkb			44
whole opens tpartVworks		18
whole opens trole	-28	17
whole opens trole's	-28	-12
whole opens tsurface		12
whole opens tsurface's	16	19	-12
whole opens tsurfaceVotherb		-19
whole opens tsurfaceVworkb		28
whole opens tsurfaceVworks	-23	24	30
whole opens ttool			-19
whole opens ttoolVworkb	27
whole opens ttoolVworks	-28
whole opens twork	-13	19
whole opens w		-18	-17
whole opens w's	-22	-26	-26
whole opens wed		-17	27
whole opens wing		-31	-31
whole opens-with -1	44
whole opens-with -3	-12
whole opens-with -4	13
whole opens-with here-after	34
whole part +1 bare		-16	-15
whole part +1 object	-14
whole part +1 opens	-18		-15
whole part +1 subject		-29
whole part +1 subject-late		-12	-23
whole part -1 bare	-16
whole part -1 object			-14
whole part -1 opens	29	14	17
whole part -1 subject		35	34
whole part -1 subject-late	-39
whole part -2 bare	-13		-17
whole part -2 object	-12
whole part -2 opens		18
whole part -2 subject		32	12
whole part -2 subject-late	-15		-40
whole part -3 bare		15
whole part -3 object			-25
whole part -3 subject-late		41	56
whole part -4 bare	-12	-12	-16
whole part -4 object	-16	-19
whole part -4 opens		22	-19
whole part -4 subject-late	13	-24	-26
whole part bare	-12
whole part bare area	12	17
whole part bare defect	-14	-42	-38
whole part bare fixture		-51
whole part bare material	-20		-13
whole part bare part	29	39
whole part bare size		24	66
whole part bare surface	-31		-19
whole part bare tells	17
whole part bare verbish	-13	40
whole part bare word	-12
whole part here-after bare	-17	22	38
whole part here-after object		16
whole part here-after opens	28	-18	25
whole part here-after subject	-29	29	39
whole part here-before object		26	-37
whole part here-before opens		15
whole part here-before subject	22	22	26
whole part here-before subject-late		33	20
whole part object	-13		-14
whole part object area	15
whole part object defect	-16
whole part object finish	-18	-13	-27
whole part object fixture	17
whole part object part			14
whole part object size		43
whole part object surface			-22
whole part object tells	-22
whole part object tool	-12
whole part object verbish		-25	-15
whole part object word	-12	-13	-13
whole part object work	-23
whole part opens		12
whole part opens area		83	-20
whole part opens defect		22	-25
whole part opens finish			22
whole part opens fixture	41	53	59
whole part opens material	12		26
whole part opens size	-36	-71	14
whole part opens surface	-17		40
whole part opens tells	-16	17	-23
whole part opens tool	29	28
whole part opens verbish		34	-16
whole part opens word		-20
whole part subject		12	18
whole part subject area	13	-23
whole part subject defect	-27	-51	16
whole part subject fixture		20
whole part subject material		27	17
whole part subject part			20
whole part subject size		-31	-14
whole part subject surface		20	48
whole part subject tells		-20
whole part subject tool	23	-17
whole part subject verbish	19	-17	12
whole part subject work			32
whole part subject-late area	20	-15	-30
whole part subject-late defect		-24
whole part subject-late fixture			37
whole part subject-late material		42	21
whole part subject-late part	-27
whole part subject-late surface		-16	-46
whole part subject-late verbish	-19	19	-20
whole part subject-late word	-14	-24	-23
whole person	-32
whole points both -1			-16
whole points both -2			-15
whole points both -3			30
whole points both opens			47
whole points both subject			-59
whole points em -1			38
whole points em -2			-40
whole points em -3			-33
whole points em object			-21
whole points em subject			44
whole points it +1		-47
whole points it -1		19
whole points it -3		14
whole points it -4		-14
whole points it bare		21	-47
whole points it here-after		-14	-31
whole points it object		-26	-23
whole points it opens		44	16
whole points it subject			53
whole points it subject-late		-18	-15
whole points none +1			-12
whole points none -3		-12
whole points none -4		-15	-22
whole points none here-after		18	28
whole points none here-before		52	28
whole points none object			-17
whole points none subject		12	12
whole points none subject-late		-19
whole points one +1			-32
whole points one -1			42
whole points one -2		-35	40
whole points one -3		39
whole points one -4		-19	-20
whole points one bare			38
whole points one object		-44
whole points one opens			-79
whole points one subject		12
whole points one subject-late		23
whole points that +1		-21	-26
whole points that -1		52
whole points that -2		36	35
whole points that -3			35
whole points that -4			-27
whole points that bare		-36	-90
whole points that here-after		-12
whole points that here-before			50
whole points that object		22
whole points that subject		33	57
whole points that subject-late		21
whole points them -1		19
whole points them -2		-55
whole points them -4		-17
whole points them bare		-49
whole points them object			-52
whole points them opens		-27
whole points them subject		36	-34
whole points they +1		12
whole points they -1		28
whole points they -3		-32
whole points they opens		25
whole points they subject-late		19
whole points those -3		38
whole points those -4		-26
whole points those bare		90
whole points those subject		-57
whole prep above	-16
whole prep after	-15
whole prep along		-42
whole prep around	-13
whole prep at	-14	-30	-20
whole prep before	-21	25
whole prep behind	26
whole prep between		15
whole prep by	-14	-80	-55
whole prep down	-18		-22
whole prep for	-22		-23
whole prep from	-43	-29	-32
whole prep here-after at	-19
whole prep here-after in	-43	-77	-21
whole prep here-after of		19	41
whole prep here-after on	37	53	-21
whole prep here-after to		-15
whole prep here-after with		26
whole prep here-before in			-17
whole prep here-before of	12		26
whole prep here-before on	-14
whole prep in		-38
whole prep into			-40
whole prep of	-18
whole prep off	42	-20
whole prep other above	-16
whole prep other along		-33
whole prep other around	-13
whole prep other at	-13	-28	-18
whole prep other before	-21	24
whole prep other behind	34
whole prep other by	-22	-77	-55
whole prep other down	-17		-22
whole prep other for	-21		-23
whole prep other from	-30	-36	-24
whole prep other in		-35
whole prep other into			-40
whole prep other of	-22
whole prep other off	33	-21	16
whole prep other out		-16	14
whole prep other over	-26	-30	-13
whole prep other to	-23		-18
whole prep other under	-43	-21
whole prep other up	-16	-19	-12
whole prep other with	-16	-24	-26
whole prep out	-12	-16	15
whole prep over	-23	-30	-14
whole prep through	46
whole prep to	-24		-13
whole prep under	-28	-21
whole prep up		-14	-12
whole prep with	-19	-13	-32
whole rank after 2	-17
whole rank after 3			-32
whole rank after 4	-19
whole rank before 4		-13	-26
whole says imperative		12
whole says modal		-22	-28
whole sentences -1	-41	-41	-37
whole sentences -1 bare	-23	-13	-24
whole sentences -1 object	-22	-30	-20
whole sentences -1 opens	-31	-55	-30
whole sentences -1 subject	-14
whole sentences -1 subject-late	-24	-15	-57
whole sentences -2	-29	-40	-39
whole sentences -2 bare	-19	-12	-17
whole sentences -2 object	-18		-23
whole sentences -2 opens	-29	-64	-39
whole sentences -2 subject		-21	-27
whole sentences -2 subject-late	17
whole sentences 1	-15	-30
whole sentences 1 bare	-17	-19
whole sentences 1 object		-12	-14
whole sentences 1 opens	-14	-39	-13
whole sentences 1 subject		-30
whole sentences 1 subject-late		-13	-13
whole size 2		15
whole sort PREP	-15
whole sort Vmoveb	-15	26	-28
whole sort Vmovep	-22	-17
whole sort Vmovepp		-14
whole sort Vmoves		-22
whole sort Vneedb		12
whole sort Vneeds			-29
whole sort Votherb	-46	-13
whole sort Votheri		-42
whole sort Vsayb	-23
whole sort Vworkb		-24	-15
whole sort Vworkbpp	-23		-35
whole sort Vworkpp	-25	-25	-25
whole sort Vworks		17	34
whole sort w		-15	-21
whole sort w's	-29	-28	-14
whole sort wed			26
whole sort wing	-16	-12	-33
whole stands after	-13	-18	-14
whole stands after 0 of 0		-17	-18
whole stands after 0 of 1		-13
whole stands after 0 of 2		-17	-16
whole stands after 0 of 3	-13
whole stands after 1 of 1		-21	-12
whole stands after has 0		-19	-19
whole stands after has 1		-18	-14
whole stands after has 2		-19	-18
whole stands after has 3	-16	-14
whole stands after points it		-28	-29
whole stands after points it's	-14
whole stands after points nothing	-13	-16
whole stands after points one		-18	-39
whole stands after points that		-14
whole stands after points they		23
whole stands before 0 of 1		-15
whole stands before 0 of 2		-25
whole stands before 0 of 3	-12	-25
whole stands before 1 of 0		-14
whole stands before 1 of 1			13
whole stands before 1 of 2		12
whole stands before 1 of 3		32	-30
whole stands before 2 of 0			16
whole stands before 2 of 1		16
whole stands before 2 of 2	-12
whole stands before 2 of 3			18
whole stands before 3 of 0			-23
whole stands before 3 of 1	13
whole stands before 3 of 2	-18		20
whole stands before 3 of 3		-19	38
whole stands before 4 of 0		-13	-26
whole stands before 4 of 2	-15
whole stands before 4 of 3	14
whole stands before has 0	-12	-17	-23
whole stands before has 2	-23
whole stands before points both			-15
whole stands before points it's	12		-14
whole stands before points one		-13
whole stands before points that		38	41
whole stands before points that's			17
whole stands before points them		-59	-34
whole stands before points they're		-57
whole stands before points those		46
whole stands here		32	25
whole stands here 0 of 2		34	27
whole stands here 0 of 3	36	34	46
whole stands here 1 of 2		28	-17
whole stands here 1 of 3	-15		-13
whole stands here 2 of 3	-19	15	-23
whole stands here 4 of 3	-16
whole stands here has 2		33	25
whole stands here has 3	13	29	24
whole stands here points it			46
whole stands here points nothing		35	27
whole stands here points one		-17	-26
whole stands here points that		16
whole stands here points that's		20
whole stands here points those		-37
whole subject none -1	18
whole subject own +1	-12
whole subject own -1	-12
whole subject own -4	-13
whole subject own here-before	18
whole subject person -1	18
whole subject person -3	-18
whole subject person -4	-33
whole subject person here-before	28
whole subject pointer +1	-33
whole subject pointer -1	22
whole subject pointer here-before	-19
whole told as done before		-16
whole told as done here		19
whole told as fixed after		-25	-16
whole told as fixed before			25
whole told as fixed here			-16
whole told as have before	-23
whole told as need after	-13
whole told as need before	-27	-59	-24
whole told as open after		-36	-28
whole told as open before		37
whole told as open here			61
whole told as ordered before		39
whole told as used after	-14
whole told as used before	14	-42	-39
whole told as used here	64		19
whole touches-after	26
whole unit none area	14
whole unit none defect	-16
whole unit none finish	-14
whole unit none tells	-15
whole unit none work	-20
whole use buy	-17		-15
whole use have		13	37
whole use measure	24	-26
whole use move	-28	21
whole use need	-19
whole use see	-30	29	-21
whole use use	-19	-40	-14
whole where +1	-15		-13
whole where -1		12	12
whole where -4		-14	-12
whole where here-after			21
whole where here-before	17	30	24
whole word air	12		39
whole word anything		-20
whole word b		-15	41
whole word back	41
whole word bad	-18	-20	-13
whole word bag	-28
whole word bench		75
whole word big		-50
whole word boards		64	-16
whole word bottom	-19		-13
whole word box	34	-15	30
whole word button	-12
whole word c	-28	52	-18
whole word code	12
whole word cold	-14		-12
whole word color	36	-32
whole word counter	31	89
whole word cut	-14	-13
whole word defect	-19
whole word double	-22
whole word dry	32
whole word except	-39	-48	-12
whole word extra	-20
whole word face		-26
whole word finish			-23
whole word first	-17
whole word front	-27	36	50
whole word full	-41	-26
whole word go	-14
whole word goes	-15
whole word hand		42
whole word hanging	-14
whole word hard		-12	15
whole word height			-36
whole word hot	30	39	30
whole word house		-30	-19
whole word inside	-12
whole word instead	-12
whole word job	13	49	-14
whole word kit		-21
whole word last	12	-61	-33
whole word layers	-63
whole word lid		-16	14
whole word little	-13	-20	-23
whole word longer	-18	27
whole word me	15	-15
whole word middle		-16
whole word n	-19		-28
whole word needs	-20
whole word new		-49
whole word nice	-25
whole word number		47	43
whole word o	-13
whole word off			19
whole word old	-23		30
whole word paper		-33
whole word piece		26
whole word quiet	-22
whole word r	-15
whole word rain	-15	-20
whole word ring	-43	12
whole word rm	79	-46	-70
whole word round	-27		-35
whole word same	-15
whole word second	-23	-35
whole word spot	-72
whole word straight	-20
whole word suite	-12
whole word supposed		21
whole word svc	-19
whole word t	78
whole word template		27
whole word top	16	-32	-15
whole word under	-15
whole word unit	-35	-24
whole word us		-25
whole word wants	24	-23
whole word zone	-49
word a			23
word about		43
word again		16
word air	-38	-38	-37
word already			20
word altogether	-15
word and			30
word anybody		-94
word anyhow	-29
word anything	-13	-17
word around			-32
word arvo		-36
word aside		-14
word at		-18	-33
word b	-20		-12
word back	71		-15
word bad			15
word bag	-22	-46
word bed	-41		49
word bench	75	45
word better		-35
word big	-22	82	-27
word bled	-33
word board	60	33	83
word boards	91	14	57
word both			-20
word bottom	-43	31
word bowl			19
word box	26	-15	44
word br	-16
word c		-13	-37
word cab	-14
word case			-17
word center	-17	-13	-33
word code	-32
word cold	-50	-19	-17
word color	-47	58
word counter	27
word ctr	12
word cut	-27
word defect	-24	-16	-15
word disp	19
word double	-22
word down			21
word dry	36	21	55
word either	-15
word electrical	52	29
word em			-21
word end	12	-36
word ends		-12
word everywhere		-16
word except	-23	-40	-36
word extra	-13	14	-24
word face		-21
word factory		31
word far			-44
word fell	28
word fella	-38	-25
word finish	-27	-12	-12
word fire		52
word first		-52
word float	71
word for		18	42
word free	-21
word from			16
word front	-54	83	29
word full		70	38
word get		35
word go	-34	21
word god	23
word goes	-21	30
word gone	-37
word guy		-30
word hair	-16	-32	-24
word hand		-44	20
word hanging		37	67
word hard	26	-24	13
word head	62	-19	31
word height			19
word her		12
word herself		18
word him		49
word his		-12
word home		-49
word hot	16	22	46
word house		-26	16
word hung	-19	15	-33
word in		-57	23
word inside	-14	-15
word instead	49
word is		-45
word it		-12	-21
word itself		39
word job		-31
word kit	54	34
word last	54	-35
word layers	41
word lead			78
word led	31
word left			16
word length	-14	-75	-19
word level		-13	-31
word lid	30	41
word little	-28		-37
word load	19
word longer	-35	14
word look		-27
word loop	21
word machine		-34	-58
word make		16
word mark		74	-25
word me			-18
word middle		-19	-38
word more		29
word n			-46
word needs	-28	-12
word new		-46
word next		-35
word now			-21
word o	-21		-24
word of			12
word off		-18
word old			14
word open	55	38
word other	-56	17	-25
word out	25	-62	-30
word outta		-22
word over	-14	28
word own		-12
word pack		-12	19
word paper			-17
word part	-13
word patch		82
word piece		-19	-19
word put			-36
word quantity		23	-25
word r	31	-54	-16
word re		-78
word real	-15	23
word rear	12
word right		-22
word ring	-12	36	46
word rise		-15	-13
word rm	-39		-76
word round	-58
word run	28
word running			-15
word s	-29
word same	-13	21
word sample		54
word scrap			-46
word second	-12	-18	37
word sheet		-23
word site		-15
word size	-36	-16
word slow	53
word somewhere	-17
word spins	13
word spot	-45		-56
word static	27
word still		34
word stop	-16
word store		-13
word story		24
word straight			-49
word street	73		-33
word suite	34
word supposed	-15	-12
word t	30
word template		35
word that			-21
word the		47
word them		29
word there		76
word third		-29	-23
word those		45
word through			-46
word time		-19	-33
word to		45
word top	-30
word total	-13
word twice	48		-60
word u		-15
word under		80	35
word unit	-30
word up	-46	34	19
word upper	24		73
word us		-19
word want		12
word wants		-41
word weight			-40
word went	26
word whoever	-20
word with		38	13
word wrong	-34		-13
word yet		-50
word zone	-30
`;
