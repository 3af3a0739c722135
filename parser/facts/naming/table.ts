/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-16
after about word		20
after along defect		-20
after along surface		24
after at area		46
after at defect		-18
after at fixture	-9	23
after at material	-14	-11
after at part		31
after at size	-14	-72
after at surface	8	37
after at verbish		24
after at word	-6
after behind defect		-29
after behind fixture		-11
after behind material	-8	28
after behind word		-11
after by area		20
after by defect		-28
after by fixture	-11	15
after by material		-42
after by part		38
after by surface	-11	-12
after by tool		-17
after by verbish		-21
after by word	-13
after deep material	-17
after deep word	-11
after down defect		-29
after down surface	-13
after down word	-9	17
after end defect		-17
after for defect		-26
after for material	-20	-64
after for surface		-20
after for word	25	61
after from defect		7
after from material	41
after from part	-6	-20
after from surface		-46
after from verbish		30
after from word	-13	23
after high surface	-16
after high word	-6
after in area		47
after in defect		-28
after in finish		-22
after in fixture		14
after in material		73
after in part		49
after in size		-36
after in surface	-8
after in tool		-13
after in verbish		-33
after in word	-12	20
after inside word		-36
after long word	-7
after mark defect		-26
after mark material		17
after mark part		36
after mark surface		-16
after mark word		-43
after number defect		63
after number fixture		32
after number material		-58
after number part		-14
after number word		10
after of defect		-39
after of finish	-7
after of material	17	-49
after of size	8
after of surface	26
after of word	12	53
after off defect		-9
after off fixture	-7
after off material	-9	-30
after off part	-16	40
after off size	-6
after off surface	-9	18
after off verbish	-7	-49
after off word		15
after on area		50
after on defect		-33
after on fixture		30
after on material	-10	87
after on part		-52
after on size	-11
after on surface		52
after on verbish		18
after on word	-9
after out defect		-32
after out material	-11
after out part		50
after out surface		40
after out verbish		-41
after out word		-58
after over defect		-27
after over fixture		54
after over surface		34
after quantity area		27
after quantity defect		-36
after quantity finish		19
after quantity fixture		15
after quantity material		30
after quantity part		37
after quantity size		40
after quantity surface		-29
after quantity tells		-26
after quantity tool		7
after quantity word		11
after short surface	-11
after short word	-20	-32
after term defect		-25
after term finish	9	-39
after term fixture	-8	32
after term material	28
after term part	43	36
after term size		10
after term surface	-12	-14
after term tool		20
after term verbish	-17	58
after term word	28	38
after through defect		-15
after through material		-28
after time defect		33
after to area		-47
after to defect		-34
after to material	-9	-14
after to part	-10
after to surface	-9	91
after to verbish	-7
after to word		-66
after under defect		-61
after under fixture		-46
after under surface		-39
after under word	-10
after up defect		-18
after up material	-19	53
after up surface		-17
after up word	-7	53
after wide material	7
after wide word	-10
after with defect		-22
after with material	-8	-38
after with part	-9	7
after with verbish	-12
after with word		19
after word area		37
after word defect	-9	-23
after word finish		27
after word fixture	-27	9
after word material	-7	41
after word part	-21	31
after word surface		30
after word tool	-6	-6
after word verbish	-13	16
article a		-25	-9
article none	-8	-12	-10
article other	-8	-10	-18
article the	15	28	21
behind about +1		14
behind about -1		10
behind about -2		-29
behind about -3		-20
behind about -4		-11
behind about here-after		-12
behind about here-before		31
behind above +1	-16
behind above -1	36
behind above -2	-26
behind above -3	9
behind above here-before	-9
behind across +1	-26
behind across -1	66
behind across -2	-40
behind across -3	-29
behind across -4	-46
behind across here-after	-27
behind across here-before	43
behind after +1	-26
behind after -1	-37
behind after -2	24
behind after -3	-17
behind after -4	18
behind after here-before	54
behind along +1		-26
behind along -1		-25
behind along -2		31
behind along -3		-9
behind along -4		-19
behind along here-after		-37
behind along here-before		83
behind apart -1	-8
behind apart here-before	59
behind at +1	-22	-18
behind at -1	-8
behind at -2	14	-26
behind at -3	9	-13
behind at -4	-17	-14
behind at here-before	31	48
behind before +1	-12
behind before -1	43
behind before -2	-10
behind before -3	-25
behind before -4	-26
behind before here-after	-11
behind before here-before	16
behind behind +1	-15	35
behind behind -1	38
behind behind -2	-25
behind behind -3		-28
behind behind -4	-28	-16
behind behind here-after	-7	-18
behind behind here-before	25	7
behind below +1	-15
behind below -1	21
behind below -3	-13
behind below -4	-37
behind below here-after	-16
behind below here-before	37
behind between +1		-13
behind between -1	84	107
behind between -4		-28
behind between here-after	-8	-33
behind by +1	-21	-14
behind by -1	-6	-12
behind by -2	-10	-21
behind by -3		-27
behind by -4	8	32
behind by here-after	-14	-13
behind by here-before	36	51
behind centers +1	61
behind centers -1	-20
behind centers -3	-27
behind centers -4	-40
behind centers here-after	-12
behind centers here-before	34
behind deep +1	-26
behind deep -1	19
behind deep -2	-10
behind deep -4	-32
behind deep here-after	-26
behind deep here-before	51
behind down +1	-20	-36
behind down -2	-20	-18
behind down -3	-25	-45
behind down -4	24	10
behind down here-after	-7	27
behind down here-before	39	30
behind end +1	-20	-15
behind end -1	9	17
behind end -2	-7
behind end -4	-10	-17
behind end here-after		-18
behind end here-before	26	25
behind for +1	-39	-40
behind for -1	-7	70
behind for -2	-71	52
behind for -3	52	-48
behind for -4	43	-30
behind for here-after		-40
behind from +1	-15	-33
behind from -1	20	6
behind from -2	-48	-30
behind from -3	-27	-14
behind from -4	-14	31
behind from here-before	57	28
behind high +1	-27
behind high -2	-20
behind high -3	-24
behind high -4	13
behind high here-after	-20
behind high here-before	63
behind in +1	-28	9
behind in -1		-18
behind in -2	24	-25
behind in -3	-29
behind in -4	21	-18
behind in here-after	-11	14
behind in here-before	23	14
behind inside +1		-27
behind inside -1		41
behind inside -2		68
behind inside -3		-29
behind inside -4		-29
behind inside here-after		-49
behind inside here-before		-14
behind into +1		57
behind into -1		-36
behind into here-after		-23
behind into here-before		-15
behind long +1	-23
behind long -1	30	13
behind long -2	-7
behind long -3	-8
behind long -4	-24
behind long here-after	-35
behind long here-before	40
behind low +1	-15	-29
behind low -1	-10	-52
behind low -2	44	-35
behind low -3	-28	19
behind low -4	-29	29
behind low here-after	-20	35
behind low here-before	38	-16
behind mark +1	-14	-24
behind mark -1	9	-8
behind mark -2	-39	24
behind mark -3		-31
behind mark -4	-17
behind mark here-after	-8	-30
behind mark here-before	13	60
behind near +1		-13
behind near -1		19
behind near -2		-28
behind near here-before		28
behind number +1		-30
behind number -1		-25
behind number -2		14
behind number -3		30
behind number -4		-41
behind number here-after		37
behind number here-before		-17
behind of +1	-13	-61
behind of -1	26	29
behind of -3	-36
behind of -4		-19
behind of here-after	19	17
behind of here-before	-19	-14
behind off +1	-23	-24
behind off -1	7	-9
behind off -2	16	-33
behind off -3	-24	-48
behind off -4	-27	39
behind off here-after	-12	17
behind off here-before	55	27
behind on +1		-25
behind on -1	7	-21
behind on -3		-10
behind on -4	-24
behind on here-after	-11	10
behind on here-before	21	31
behind out +1	-26	-7
behind out -1	-23
behind out -2	40	-34
behind out -3	-36
behind out here-after	-15	-10
behind out here-before	55	48
behind over +1	-18	-14
behind over -1		-27
behind over -2	-13	-45
behind over -3	-14	25
behind over -4	-15	-15
behind over here-after	-10	26
behind over here-before	52	20
behind past +1	-12
behind past -1	29
behind past -2	-17
behind past here-after	-9
behind past here-before	28
behind quantity +1	-21
behind quantity -1	-19
behind quantity -2	-64
behind quantity -3	10	-9
behind quantity -4	37	-18
behind quantity here-after	-22
behind quantity here-before	58	21
behind short +1	-13	-37
behind short -2	-52	-15
behind short -3	-30	10
behind short -4	13	-27
behind short here-after	-7	38
behind short here-before	82	15
behind square +1	-23
behind square -1	-10
behind square -4	-25
behind square here-after	-24
behind square here-before	14
behind tall +1	-29
behind tall -1	-36
behind tall -2	13
behind tall -3	41
behind tall -4	17
behind tall here-after	-34
behind tall here-before	27
behind term +1	-21	-24
behind term -1	-6
behind term -2	17
behind term -3	-26
behind term -4	-23	-27
behind term here-after	8	22
behind term here-before	40	32
behind thick +1	-28
behind thick -1	15
behind thick -2	29
behind thick here-before	-11
behind through +1		-8
behind through -1		-45
behind through -2		-44
behind through -3		45
behind through -4		-29
behind through here-after		26
behind through here-before		19
behind time +1		-22
behind time -1	-18
behind time -2	52	-36
behind time -3	-20	-25
behind time -4	-13	13
behind time here-after		31
behind time here-before		-7
behind to +1	-31	7
behind to -1	36	21
behind to -2		-56
behind to -3	-16	24
behind to -4	-12	-45
behind to here-after	-15	-19
behind to here-before	24	43
behind toward +1	-28
behind toward -1	-15
behind toward -2	30
behind toward -3	13
behind toward -4	-19
behind toward here-after	-16
behind toward here-before	23
behind under +1	-17
behind under -1	-33	7
behind under -2	-48	-18
behind under -3	49	-30
behind under -4	-17	-34
behind under here-after		38
behind under here-before	72	-8
behind up +1	-8	-24
behind up -1	-14	-29
behind up -2	55	-30
behind up -3	-10
behind up -4		-45
behind up here-after	-18	29
behind up here-before	-18	58
behind wide +1	-43
behind wide -4	16
behind wide here-after	-11
behind wide here-before	43
behind with +1	-20
behind with -1	22
behind with -2	-29	-9
behind with -3	25	-26
behind with -4	-12	14
behind with here-after	-20	-20
behind with here-before	29	33
behind word +1	-16	-6
behind word -3		-13
behind word -4	-18	-20
behind word here-after	-7	13
behind word here-before	39	16
between 	24	21
between @	43
between a	22
between a good	-10
between about	-28
between and	-87	-57
between are	33	36
between are at	45
between at	45
between back	33
between be	28	19
between bow	29
between by	-48
between by about	-22
between call for	-16
between come	37	65
between come in	13
between come out	24
between come up	12
between come with		12
between cut	54
between do		54
between down	-28
between every	72
between for about	-26
between from	-7
between get		26
between get a		36
between go		64
between hang	91
between has		60
between has a		28
between have		51
between have a		41
between i		31
between in	16
between in at	22
between is	42
between is at	28
between it	-40	123
between just		22
between keep		47
between measure	31
between move	69
between need	37
between of	43	-17
between off	89
between on	-38	-56
between one		-12
between only	71
between read	49
between run	45
between sag	51
between say	-42
between sit	63
between sit at	54
between stand	-21
between stick out	34
between still		52
between stop		71
between test	48
between that		66
between the		-53
between they		73
between to	39
between under	-38
between up	23
between want	-27
between were		39
between with	66	7
between with a		80
between x	-29
carried	50
carried -1 none	17
carried -1 own	23
carried -1 person	62
carried -1 pointer	46
carried -1 tells	77
carried -2 none	54
carried -2 own	17
carried -2 person	-38
carried -2 pointer	75
carried -2 tells	95
carried -3 none	33
carried -3 person	-49
carried -3 pointer	54
carried -4 none	99
carried -4 own	22
carried -4 person	32
carried -4 pointer	86
carried here-before none	31
carried here-before own	36
carried here-before person	40
carried here-before pointer	38
counted angle		-11	-28
counted area	40	69
counted bare		19	25
counted count	24		12
counted current	-28	-46	-21
counted gauge	-13	-19	-28
counted length	-9		-18
counted pack		9
counted percent	-16		-21
counted power	-38	-16
counted pressure	-13	-39	-39
counted slope	-11
counted temperature	10	-27
counted time	20	-8	18
counted voltage	64	-32
counted volume	-27	-15	-53
counted weight	-25	11	19
does add material			83
does add surface			-31
does add word			-32
does adjust word			-46
does ask area			38
does ask finish			-18
does ask fixture			13
does ask material			-81
does ask part			21
does ask size			77
does ask surface			-18
does ask word			28
does bag word			52
does be area			-8
does be defect			-12
does be finish			-51
does be fixture			51
does be material			-11
does be surface			13
does be tells			-35
does be tool			46
does be verbish			11
does be word			-11
does bend defect			-29
does bend material			40
does bend word			44
does blow defect			-22
does blow material			17
does blow part			81
does blow surface			20
does blow word			-51
does bring area			9
does bring defect			-32
does bring surface			-55
does bring tool			74
does bring verbish			-37
does bring word			16
does build word			-16
does buy material			109
does buy word			-13
does call area			-35
does call defect			-24
does call fixture			6
does call material			22
does call part			54
does call size			-44
does call tells			16
does call tool			15
does call verbish			15
does call word			-28
does can material			-16
does can word			-8
does cap part			17
does cap word			-44
does caulk material			34
does caulk word			-45
does change area			-13
does change defect			-24
does change finish			10
does change fixture			71
does change material			8
does change part			40
does change surface			-59
does change verbish			31
does change word			-14
does check area			-50
does check defect			-13
does check fixture			-13
does check material			19
does check part			-13
does check surface			-44
does check tool			99
does check word			-41
does chip material			-29
does clamp defect			-20
does clamp material			-40
does clamp surface			34
does clamp word			-37
does clean defect			-14
does clean fixture			-12
does clean material			-10
does clean part			48
does clean surface			-31
does clean word			21
does clear word			-35
does close area			11
does close defect			-30
does close material			-41
does close surface			61
does close word			-47
does come defect			-29
does come finish			-33
does come fixture			-29
does come material			-9
does come part			39
does come size			-54
does come surface			21
does come tells			-14
does come verbish			49
does come word			13
does count word			-43
does cover word			-9
does crack material			-52
does cut area			11
does cut finish			-52
does cut fixture			41
does cut material			30
does cut part			-26
does cut size			-58
does cut tells			58
does cut verbish			-29
does cut word			-23
does dig defect			40
does dig fixture			22
does dig material			81
does dig surface			-40
does dig word			-39
does do area			30
does do defect			-32
does do finish			-24
does do fixture			89
does do material			16
does do part			59
does do surface			-36
does do tool			-7
does do verbish			-33
does do word			-50
does don't defect			-17
does don't material			11
does don't surface			12
does don't word			-32
does drill area			-35
does drill defect			34
does drill fixture			-33
does drill material			-18
does drill part			47
does drill surface			34
does drill word			-41
does drop defect			-18
does drop material			36
does drop surface			-11
does drop word			-15
does dry area			-7
does dry defect			-21
does dry fixture			120
does dry material			-41
does dry verbish			-38
does dry word			-71
does email fixture			6
does email word			62
does exchange word			13
does figure material			-52
does figure word			-11
does file defect			-20
does file fixture			-76
does file part			53
does file word			12
does fill area			-52
does fill defect			40
does fill fixture			-28
does fill material			-8
does fill part			-51
does fill size			52
does fill surface			93
does fill verbish			57
does fill word			-75
does find area			-8
does find defect			-33
does find material			-115
does find word			44
does finish part			12
does finish word			-62
does fit material			10
does fit word			-40
does fix area			-15
does fix defect			25
does fix part			52
does fix surface			-13
does fix verbish			17
does fix word			-74
does flash surface			48
does flip material			30
does flip surface			-41
does flip word			-6
does float fixture			-17
does float surface			7
does float word			87
does flush defect			-21
does flush fixture			22
does flush material			-24
does flush part			-8
does foam word			17
does fre area			10
does fre defect			-24
does fre fixture			75
does fre part			-26
does fre word			-9
does get area			10
does get defect			32
does get fixture			7
does get material			-12
does get part			28
does get size			-32
does get surface			30
does get tells			-10
does get tool			13
does get verbish			-39
does get word			-31
does give area			-54
does give defect			8
does give fixture			70
does give material			26
does give part			-52
does give surface			-67
does give word			12
does glue area			-15
does glue defect			14
does glue finish			-11
does glue fixture			32
does glue material			19
does glue part			44
does glue surface			-59
does glue verbish			11
does glue word			-38
does go area			36
does go defect			-9
does go finish			17
does go fixture			40
does go material			41
does go surface			-28
does go tells			-33
does go verbish			-64
does go word			-13
does gotta word			-20
does grab material			56
does grab word			-51
does grind area			-15
does grind defect			25
does grind material			11
does grind surface			27
does grind word			17
does grout defect			-10
does grout material			-32
does grout surface			23
does grout word			-71
does hang area			-16
does hang defect			-39
does hang fixture			59
does hang material			-8
does hang part			75
does hang surface			-17
does hang verbish			-43
does hang word			-41
does has material			55
does has word			-42
does have area			-26
does have defect			-11
does have finish			-42
does have material			12
does have part			54
does have surface			7
does have tool			6
does have verbish			-10
does have word			-15
does hit area			-54
does hit defect			10
does hit fixture			-15
does hit material			-44
does hit part			-31
does hit surface			79
does hit word			-43
does hold fixture			-52
does hold part			40
does hold surface			76
does i'll defect			-20
does i'll fixture			-10
does i'll material			-61
does i'll part			78
does i'll tool			-18
does i'll verbish			-38
does i'll word			-8
does install word			-55
does jack material			24
does jack word			21
does keep defect			-10
does keep fixture			28
does keep material			10
does keep part			59
does keep surface			-46
does keep word			-27
does knock defect			-9
does knock material			18
does knock surface			-63
does knock word			-72
does lay defect			41
does lay fixture			43
does lay material			-18
does leave area			-34
does leave defect			-62
does leave finish			20
does leave fixture			34
does leave material			-11
does leave part			12
does leave size			-40
does leave surface			72
does leave tool			-40
does leave verbish			39
does leave word			-42
does let area			18
does let defect			-20
does let fixture			59
does let material			64
does let part			-40
does let surface			-35
does let verbish			-21
does let word			-10
does lift defect			34
does lift material			11
does lift word			-21
does like part			20
does like surface			-38
does like word			-51
does look area			47
does look defect			-40
does look material			-42
does look part			51
does look surface			15
does look verbish			44
does look word			-49
does make area			-13
does make defect			19
does make fixture			-35
does make material			-12
does make part			-76
does make size			60
does make surface			32
does make verbish			-12
does make word			30
does measure defect			-12
does measure fixture			-34
does measure material			-7
does measure part			-16
does measure verbish			30
does measure word			47
does move defect			10
does move fixture			25
does move material			-41
does move part			34
does move surface			-31
does move verbish			-47
does need defect			-20
does need finish			-37
does need fixture			13
does need part			52
does need size			-6
does need surface			-14
does need verbish			-17
does nip word			-13
does open area			-17
does open fixture			-6
does open material			-31
does open part			-10
does open surface			13
does open tells			-27
does open tool			-48
does open verbish			46
does order defect			-8
does order fixture			-8
does order material			-42
does order part			43
does order surface			24
does order verbish			26
does order word			-9
does pack area			-36
does pack defect			-56
does pack fixture			34
does pack material			24
does pack part			-16
does pack verbish			28
does pack word			14
does paint area			62
does paint defect			-38
does paint fixture			29
does paint material			35
does paint surface			-9
does paint verbish			-38
does patch area			61
does patch defect			72
does patch fixture			-54
does patch material			53
does patch part			-84
does patch surface			-24
does patch verbish			-51
does pick area			-13
does pick defect			-20
does pick material			26
does pick part			-70
does pick word			40
does plane defect			26
does plane fixture			61
does plane surface			-42
does plane verbish			-23
does plane word			-30
does plug area			13
does plug defect			-30
does plug material			-28
does plug surface			-85
does plug word			37
does pour area			14
does pour defect			-62
does pour material			39
does pour surface			51
does pour word			-24
does prime area			-40
does prime defect			-14
does prime material			18
does prime part			16
does prime surface			18
does prime word			-57
does pull area			-25
does pull defect			-23
does pull fixture			18
does pull material			34
does pull surface			-18
does pull tells			-32
does pull verbish			-8
does pull word			14
does pump part			-9
does pump word			-13
does push material			36
does push word			-10
does put defect			-11
does put finish			-29
does put fixture			7
does put material			11
does put part			67
does put size			30
does put surface			-40
does put tells			-13
does put tool			20
does put verbish			-17
does put word			-38
does raise part			78
does raise surface			-15
does raise word			-68
does rake defect			12
does rake material			-11
does rake surface			34
does rake word			-55
does read part			-41
does read word			23
does recheck word			66
does recut area			-29
does recut material			61
does recut surface			-6
does recut word			-30
does redo defect			-40
does redo material			66
does redo part			52
does redo surface			-59
does redo word			6
does rehang defect			-19
does rehang fixture			36
does rehang material			8
does rehang word			-33
does replace area			-60
does replace fixture			-17
does replace material			-10
does replace part			74
does replace word			-28
does reset defect			-31
does reset fixture			19
does reset material			55
does reset part			24
does reset surface			-90
does reset word			22
does rip area			-23
does rip defect			39
does rip material			56
does rip surface			-28
does rip verbish			-17
does rip word			-8
does roll area			80
does roll material			-16
does roll word			25
does run area			-50
does run defect			14
does run fixture			45
does run part			42
does run size			32
does run surface			8
does run tool			14
does run verbish			-53
does run word			-50
does sand area			32
does sand defect			-15
does sand fixture			88
does sand surface			-11
does sand verbish			6
does sand word			-23
does say area			37
does say defect			-8
does say finish			-12
does say fixture			28
does say part			26
does say size			11
does say surface			23
does say tells			-27
does say tool			-53
does say verbish			-59
does say word			-16
does scrape area			-53
does scrape defect			-36
does scrape fixture			35
does scrape material			68
does scrape part			-7
does scrape surface			23
does scrape word			-48
does screw area			17
does screw defect			-44
does screw material			55
does screw part			-35
does screw surface			-21
does screw word			-63
does scribe area			-33
does scribe defect			-16
does scribe fixture			12
does scribe material			71
does scribe surface			-34
does scribe word			-37
does seal area			10
does seal defect			-18
does seal material			25
does seal part			18
does seal surface			38
does seal word			-55
does see area			-18
does see defect			-11
does see finish			-29
does see fixture			-50
does see material			-21
does see surface			45
does see verbish			-11
does see word			25
does send area			-62
does send defect			34
does send fixture			59
does send material			-17
does send size			-38
does send surface			-87
does send word			26
does set area			-45
does set finish			-13
does set fixture			47
does set material			42
does set part			-66
does set size			-34
does set verbish			-20
does set word			21
does shim area			-27
does shim defect			-32
does shim fixture			70
does shim material			9
does shim part			24
does shim surface			-28
does shim verbish			-44
does ship material			-41
does shut area			-17
does shut defect			-42
does shut fixture			40
does shut material			-111
does shut part			66
does shut word			37
does sister area			-55
does sister defect			-25
does sister material			129
does sister part			-50
does sister word			-27
does sit surface			-28
does skim part			-39
does skim surface			99
does skim word			-23
does snake word			32
does snug defect			-15
does snug fixture			-63
does snug material			60
does snug part			-20
does snug surface			38
does snug word			17
does splice defect			-24
does splice fixture			18
does splice material			16
does splice surface			-17
does splice word			37
does spray defect			39
does spray material			-42
does spray word			7
does start area			73
does start material			-20
does start part			-17
does start word			15
does stick defect			-15
does stick material			17
does stick part			18
does stick surface			19
does straighten defect			27
does straighten fixture			-50
does straighten part			-10
does straighten word			64
does strap word			-38
does strip defect			-28
does swap area			9
does swap defect			-25
does swap finish			-42
does swap fixture			-35
does swap material			29
does swap part			70
does swap size			-25
does swap surface			-75
does swap tool			-9
does swap verbish			11
does take area			-9
does take defect			-21
does take finish			11
does take fixture			40
does take material			13
does take size			-50
does take surface			-35
does take tells			-33
does take verbish			-29
does take word			17
does tape area			-16
does tape defect			8
does tape fixture			-49
does tape material			-35
does tape part			-15
does tape size			-19
does tape surface			15
does tape word			43
does tear word			-47
does tell area			40
does tell defect			-54
does tell fixture			27
does tell material			-128
does tell part			13
does tell surface			9
does tell tool			-17
does tell verbish			105
does tell word			17
does think word			42
does throw defect			-24
does throw material			-32
does throw surface			77
does tighten area			-27
does tighten defect			-44
does tighten fixture			-22
does tighten material			18
does tighten part			74
does tighten surface			27
does tighten word			-18
does touch defect			37
does touch material			-9
does touch word			26
does trim area			-37
does trim defect			-30
does trim fixture			-12
does trim material			44
does trim part			40
does trim surface			9
does trim verbish			30
does trim word			-24
does turn area			-67
does turn defect			-28
does turn fixture			11
does turn material			16
does turn part			58
does turn tool			-51
does turn verbish			-8
does turn word			-8
does use defect			-15
does use fixture			58
does use part			20
does use verbish			-35
does use word			-42
does wait defect			-54
does wait fixture			32
does wait material			-7
does wait word			12
does walk area			73
does walk fixture			-58
does walk material			-12
does walk surface			54
does walk verbish			-10
does walk word			-28
does want area			13
does want defect			-47
does want finish			-26
does want fixture			10
does want material			10
does want part			-53
does want size			72
does want surface			10
does want tells			-9
does want tool			38
does want word			10
does wash material			59
does wash word			-91
does wire word			-48
does wrap surface			36
does wrap word			-22
far after 1	-13	22
far after 13+	-19	-19
far after 2	-13
far after 3-4	-7
far after 5-7	-8	-11
far after 8-12	-19	-7
far before 0	24	21	-18
far before 1	16	18	-16
far before 13+	-19	-24
far before 2	26	30	-10
far before 3-4	16	16
far before 5-7	15
far before 8-12			14
figure-between	-20	7
flawed	10	-11	43
frame copula +1	-18	-15
frame copula -3	-7	-12
frame copula -4	-10	-18	-11
frame copula defect			-11
frame copula finish			-49
frame copula fixture			35
frame copula here-before	35	27	14
frame copula material			26
frame copula part			36
frame copula size			-29
frame copula surface			14
frame copula tells			-39
frame copula tool			-16
frame copula verbish			-10
frame copula word			-34
frame copula work			-26
frame imperative +1	-16
frame imperative -1		15
frame imperative -2	-13		13
frame imperative -3		-47
frame imperative -4	-14	-35	-11
frame imperative area			-6
frame imperative defect			-14
frame imperative finish			-10
frame imperative fixture			24
frame imperative here-after	7	19
frame imperative here-before	39	34	-7
frame imperative material			12
frame imperative part			19
frame imperative size			-11
frame imperative surface			7
frame imperative tells			-37
frame imperative tool			28
frame imperative verbish			-14
frame imperative word			-13
frame imperative work			-30
frame modal +1	-21	10
frame modal -1	19	-23	-8
frame modal -2	23		12
frame modal -3	-19	9
frame modal -4	-7	-36
frame modal area			-7
frame modal defect			-18
frame modal finish			-19
frame modal fixture			10
frame modal here-after	-27	22
frame modal here-before	16		-20
frame modal material			10
frame modal part			29
frame modal size			10
frame modal surface			23
frame modal tells			-55
frame modal tool			-12
frame modal verbish			-10
frame modal word			-15
frame modal work			-17
frame none +1	-24	-25
frame none -1	9		13
frame none -3	-8	-11	-9
frame none -4	-13	-9
frame none area			32
frame none defect			-20
frame none finish			12
frame none fixture			24
frame none here-after		9
frame none here-before	31	32	-54
frame none part			11
frame none size			-31
frame none surface			17
frame none tells			-10
frame none tool			-17
frame none verbish			-27
frame none word			-15
frame none work			60
frame owed +1	-18	37
frame owed -1		-32	14
frame owed -2		-60	24
frame owed -3	-11	-14	13
frame owed -4	-9	-24	-41
frame owed area			-10
frame owed defect			-16
frame owed finish			-48
frame owed fixture			26
frame owed here-after	-15	36
frame owed here-before	39	50	-36
frame owed material			26
frame owed part			15
frame owed tells			-50
frame owed tool			-30
frame owed word			-9
frame owed work			7
frame past +1	-19	-8
frame past -1	7		39
frame past -2		-7
frame past -3	-14		-22
frame past -4	-22	-14	-35
frame past defect			-9
frame past finish			8
frame past fixture			8
frame past here-after	-10	6
frame past here-before	46	13
frame past material			15
frame past part			27
frame past surface			-7
frame past tool			-19
frame past verbish			-11
frame past word			-18
frame past work			-28
frame present +1	-14	-6
frame present -1	7	12
frame present -2		-10	12
frame present -3	11
frame present -4	-13	-16	-19
frame present defect			-19
frame present finish			-18
frame present fixture			25
frame present here-after	-14
frame present here-before	18	17
frame present material			11
frame present part			20
frame present size			27
frame present surface			15
frame present tells			-29
frame present verbish			-7
frame present word			-23
frame present work			-27
heading	-12
heading +1	-17	-9
heading -1	-25		-9
heading -2	-11		-15
heading -3	15	19	-8
heading -4	-7	10	12
heading here-after		-17
heading here-before	-19		-51
join	-9	-10	-10
join +1	-7		-11
join +1 defect	-6
join +1 fixture			-14
join +1 tells			-12
join +1 tool	-7		-9
join +1 verbish	-6
join +1 word			-9
join +1 work			28
join -1	-8
join -1 area			8
join -1 defect			-12
join -1 fixture			12
join -1 tells	-9		-7
join -1 work			-7
join -2	-10		-10
join -2 finish	-6
join -2 size			-8
join -2 surface	-6
join -2 verbish			-8
join -2 work	-8		-8
join -3	-8		-7
join -3 part	-7
join -3 size	-9		-7
join -3 tells			-9
join -3 verbish	-6		-6
join -3 work	-7		-14
join area	-8
join area+material			7
join area+part		7
join area+surface		8	8
join area+tells	-6	20	11
join area+tool		-6	-10
join defect	-6
join defect+size	-11
join defect+tells	7
join finish	-10	-7	-14
join finish+area		-10	-7
join finish+finish		-7	-13
join finish+size		11
join finish+surface	-8
join finish+tells	-8
join finish+tool	-6
join fixture+area		14	7
join fixture+defect		-9
join fixture+finish		20
join fixture+fixture		22	25
join fixture+size	18
join fixture+tells	7
join fixture+tool		-19	-14
join fixture+verbish			-6
join fixture+work	-7		-10
join leads about	-15		-9
join leads about quantity across	-23	7
join leads about quantity verb		-9
join leads about verb of		-7
join leads above		-7
join leads across	31
join leads after	-11
join leads along	16	-9
join leads around			8
join leads at	7	6
join leads at number	30	31
join leads at quantity off			-14
join leads at quantity to	-7	-17
join leads at quantity word		6
join leads at term term	-7	-6
join leads at term verb	6	9
join leads at term word		10
join leads at verb word		31
join leads at word		7
join leads at word number		-17
join leads at word word		-9
join leads before		-7
join leads before word		6
join leads before word verb	9		31
join leads behind	8		8
join leads behind term verb			23
join leads behind word	12
join leads behind word term		-19
join leads behind word word	11	26	8
join leads between	23	6	8
join leads between term word	-7	-13
join leads by		7	10
join leads by quantity		-7
join leads by term	12	-8
join leads by term number		-10
join leads by term quantity		11
join leads by term verb			9
join leads down	8	-12
join leads down by		7
join leads down to	9	-11
join leads down word		-35
join leads down word word		18
join leads for quantity		11
join leads for term		-11
join leads for term term			-12
join leads for term verb		-7	14
join leads for term word		-8	-7
join leads for word		16	9
join leads for word term	-9	-13	-10
join leads for word verb		-11
join leads for word word		21
join leads from	-6
join leads from term term			8
join leads from term to	-9
join leads in number	11	-11	11
join leads in number verb		29	33
join leads in number word		50	-7
join leads in quantity word	-8
join leads in term	20
join leads in term by		-11
join leads in term mark		-18
join leads in term number		14
join leads in term of		-7
join leads in term quantity		-16	-17
join leads in term term	9	11	31
join leads in term up		-6
join leads in term with		13
join leads in verb		-25	-21
join leads in verb behind		8
join leads in verb verb		-12	-11
join leads in word	6
join leads in word number		-9
join leads in word of	24	9	-25
join leads in word quantity	23
join leads in word verb			11
join leads in word word		-11	-10
join leads into	-12	-7	-8
join leads into word at		9
join leads mark number	10	8	20
join leads mark number term	-7	-9
join leads mark word		-7	-8
join leads near	-9
join leads next to		15
join leads number		14	7
join leads number in		9
join leads number of		-33	8
join leads number verb	15		9
join leads number verb term			7
join leads number verb word		-10
join leads number word		-7
join leads number word term		-16
join leads number word verb		22
join leads number word word		22
join leads of quantity	-20	-7
join leads of quantity word	-7	-6
join leads of term	-13		-7
join leads of term quantity		25
join leads of term term	-8
join leads of term word	-8	-8
join leads of verb	-11
join leads of verb term		-7
join leads of verb verb		13
join leads of verb word	-10
join leads of word		-16
join leads of word quantity	-11
join leads of word term		-12	-7
join leads of word verb		-10	-7
join leads of word word		-9
join leads off		11
join leads off at		-8
join leads off in		-16
join leads off term word			25
join leads on			10
join leads on in			8
join leads on quantity		6
join leads on quantity word			12
join leads on term by		-10
join leads on term term	-8	-8
join leads on term word			15
join leads on verb	27	-33
join leads on verb of		7
join leads on verb term			-6
join leads on verb verb	-7	-9
join leads on verb word			9
join leads on word		14	-11
join leads on word at		-6
join leads on word number		20
join leads on word of	21	19	17
join leads on word quantity		-10	-9
join leads on word verb	-7
join leads on word word	-14
join leads out at		-7
join leads out of term		-11	-7
join leads out on		-11
join leads over		8
join leads over by			-10
join leads over term verb	13
join leads over to		-13
join leads over word word		-10
join leads past		-6
join leads quantity at		-14	-11
join leads quantity at verb	-6
join leads quantity before	-15
join leads quantity by		6
join leads quantity by quantity		-7	12
join leads quantity from		-8
join leads quantity from term		-6
join leads quantity in		-16	-7
join leads quantity mark		8
join leads quantity of		-14
join leads quantity of quantity			-12
join leads quantity of term	-8
join leads quantity of word	-10	-7	18
join leads quantity off			-6
join leads quantity off term		-12
join leads quantity over		-11
join leads quantity term		-13
join leads quantity term quantity		-15	-16
join leads quantity term word		12	7
join leads quantity to		-7
join leads quantity verb on		7	30
join leads quantity verb quantity		-10
join leads quantity verb term		-12
join leads quantity verb verb			-7
join leads quantity verb word	-11	-12	-11
join leads quantity with quantity	-6
join leads quantity word	-12
join leads quantity word quantity			-8
join leads quantity word term	14		-12
join leads quantity word word		-13	-10
join leads term around		15
join leads term by	-14	-7
join leads term by word		-7
join leads term from		-8
join leads term of word		-10
join leads term on	-10	7	-8
join leads term on term		-18
join leads term on verb		-16
join leads term on word		-8
join leads term over	-8
join leads term quantity at		-10
join leads term term term		-15
join leads term term verb		-8
join leads term term word	-19	-12	-9
join leads term under		-7
join leads term verb			12
join leads term verb by		11
join leads term verb in		8
join leads term verb term			-13
join leads term verb verb		-7	-10
join leads term verb word	13	-8	9
join leads term with	7
join leads term word in		-8
join leads term word on		-8
join leads term word word		-11	-6
join leads through		-10
join leads time		28	9
join leads time before word		-9
join leads time for	-24
join leads time word verb		-12	-8
join leads time word word			20
join leads to		-8
join leads to verb	7	-8	-14
join leads to verb down		19
join leads to verb quantity		-24	-12
join leads to verb term		-7
join leads to verb word		-12	-9
join leads to word			-7
join leads to word word	-9	-10
join leads under	9	9
join leads under term		13
join leads under term word	7
join leads under word	-9		9
join leads under word term	7		8
join leads under word word		-27
join leads underneath word		11
join leads up	16	-7	-11
join leads up by	-7
join leads up in			9
join leads up on	13		13
join leads up on quantity			20
join leads up quantity		10
join leads up quantity term		-8
join leads up to	-12	-8	-8
join leads up word			-8
join leads up word word		-14
join leads verb about quantity		-11	9
join leads verb at		-6
join leads verb at quantity			-7
join leads verb by		-7
join leads verb down		-10	-8
join leads verb for	-10	-14
join leads verb from	7
join leads verb from term	6	7	9
join leads verb in		8
join leads verb in at		14
join leads verb in term		16
join leads verb in word			17
join leads verb number		-7
join leads verb of			-7
join leads verb of word		-7
join leads verb off		28
join leads verb off in		-23
join leads verb on		-10	14
join leads verb on number	10
join leads verb on quantity			-9
join leads verb on term		-11
join leads verb out		-16	8
join leads verb out at	7
join leads verb out of		-12	-12
join leads verb out quantity		-12	-16
join leads verb out term		34
join leads verb out word			-10
join leads verb over		-15
join leads verb quantity			7
join leads verb quantity at		-8
join leads verb quantity below		12
join leads verb quantity in	20	-7
join leads verb quantity of		-14
join leads verb quantity off		-8
join leads verb quantity on		-6	-15
join leads verb quantity over		-18
join leads verb quantity term			-8
join leads verb quantity verb		-12	-18
join leads verb quantity word	10
join leads verb term at		9	12
join leads verb term by	-7		-13
join leads verb term in		-9	-10
join leads verb term on		-7	15
join leads verb term quantity		17	14
join leads verb term term		8
join leads verb term to		10
join leads verb term verb		19	11
join leads verb time		9
join leads verb time quantity	-6	-13	-12
join leads verb to	7		19
join leads verb to verb		-32
join leads verb under		-14	-9
join leads verb under word		-8
join leads verb up quantity		11
join leads verb up word		-8	7
join leads verb verb at	-10	-13	22
join leads verb verb by			-6
join leads verb verb down		-12	-12
join leads verb verb from		-7	7
join leads verb verb in		13	16
join leads verb verb number		13
join leads verb verb off		-6
join leads verb verb out			-11
join leads verb verb over		11
join leads verb verb quantity		9	-7
join leads verb verb term		-16	16
join leads verb verb time	-7	32	13
join leads verb verb to		9
join leads verb verb with		-6	-7
join leads verb verb word		-11	-7
join leads verb with		11
join leads verb with quantity			-14
join leads verb with verb		-7
join leads verb with word		-8	-8
join leads verb without		-10
join leads verb word			-10
join leads verb word at	-7	-8
join leads verb word in		-7	-11
join leads verb word mark	-22
join leads verb word number		8
join leads verb word on		11	7
join leads verb word out			9
join leads verb word term	-8		-23
join leads verb word to			9
join leads verb word verb		-6
join leads verb word with		-11
join leads with	-6
join leads with quantity		-16	-15
join leads with term word		-15
join leads with verb term			15
join leads with word word	-6	8
join leads without		-12	-10
join leads word about quantity			-10
join leads word at	-17	-12	-22
join leads word at quantity			-8
join leads word at word	-6	33
join leads word before		-8
join leads word by		-10
join leads word for	-12
join leads word for word		7
join leads word in at	9
join leads word in from			8
join leads word in term		-8
join leads word in verb	-7
join leads word in word		8
join leads word mark		-13
join leads word number off	-8
join leads word number word		-8	-10
join leads word of			10
join leads word of term		6
join leads word off	-9	10	-9
join leads word on number			-9
join leads word on quantity		-20	-7
join leads word on term		-12
join leads word on word		-8	9
join leads word out of			-6
join leads word quantity			-9
join leads word quantity by		-15
join leads word quantity from		-7
join leads word quantity of		-16
join leads word quantity off		-11
join leads word quantity on		-17	-10
join leads word quantity quantity		-10
join leads word quantity term			-8
join leads word quantity to	6
join leads word quantity verb			11
join leads word term at	6	14
join leads word term by	-7	-8	-6
join leads word term for		34	41
join leads word term from		-6
join leads word term in		-11
join leads word term of			24
join leads word term on		-6	-23
join leads word term term			-6
join leads word term to	7
join leads word term verb	-10	-11
join leads word time		-10
join leads word time word		13
join leads word to verb	8
join leads word up quantity		19
join leads word up to		-14
join leads word up word	-9	-11
join leads word verb at		-15	-9
join leads word verb down		-13
join leads word verb for	8
join leads word verb from			-18
join leads word verb in	-6	-7	-8
join leads word verb number		-12
join leads word verb off		-27
join leads word verb out	-11
join leads word verb quantity	7
join leads word verb term		-16	-8
join leads word verb to		-6
join leads word verb up		-17	-12
join leads word verb verb			-7
join leads word with	-27
join leads word with term		19
join leads word word at	-12	-14
join leads word word by		7
join leads word word in	-7
join leads word word mark	-33
join leads word word number		-8
join leads word word quantity	-10	-10	-7
join leads word word term		-10	-8
join leads word word to	-6	-6	13
join leads word word up		-6
join leads word word verb			-9
join leads word word with		-13
join leads word word word	7	9
join links 	16	-9
join links about	-28		-7
join links about quantity	-21
join links about quantity across	-26	7
join links about quantity by	-28
join links about quantity verb		-6
join links about verb of		-7
join links above			74
join links above term verb	9
join links across	18	16	22
join links after	-22		-15
join links along	14	-22	15
join links around	11	18	34
join links at	16	13	14
join links at number	37	48
join links at quantity	34
join links at quantity off	20		-18
join links at quantity term	-23
join links at quantity to	-38	-40
join links at quantity word		-7	23
join links at term	13		-10
join links at term term	28
join links at term verb	39		38
join links at term word	55		30
join links at verb term	-45
join links at verb word		16
join links at word	35
join links at word number		-12	-6
join links at word term	24	-10
join links at word verb	19	-14	-15
join links at word word		-15	13
join links before word		6
join links behind	23	20	33
join links behind term verb	-10		32
join links behind term word	69
join links behind word	25	-6
join links behind word number		-10
join links behind word term		-13
join links behind word verb	9	-8
join links behind word word	-21	41	9
join links below word		-16
join links between	-8	-14	-21
join links between term word	32	-17	-18
join links by	8	16	36
join links by quantity		-7
join links by term	78	7	6
join links by term number		-13
join links by term quantity	29	10
join links by term term		14	-8
join links by term verb			42
join links by term word	78		13
join links by word verb		15
join links by word word		-7
join links down	28		-6
join links down by		25
join links down in			-16
join links down to	11	-11	-15
join links down word	25	-13
join links down word word		6
join links for	7	29	26
join links for about quantity		-11
join links for quantity	-8
join links for term		-10
join links for term in	-18
join links for term term	-12		-33
join links for term verb		-6	25
join links for term word	-20	-9	-23
join links for verb word		-11
join links for word		10	15
join links for word term	7	-16	-8
join links for word verb		-7
join links for word word		15
join links from	-10		-6
join links from term to	-18		-12
join links in		17	7
join links in about quantity	-12
join links in at quantity	-9
join links in number	21	-13	46
join links in number verb		59	44
join links in number word		21	9
join links in quantity		14	22
join links in quantity word	13
join links in term	62		13
join links in term by	15	-11
join links in term number	38	37	31
join links in term quantity	32	-9	-27
join links in term term		10	51
join links in term verb	27
join links in term with		13
join links in term word	13		21
join links in verb		-20	-30
join links in verb behind		31
join links in verb term			-9
join links in verb verb		-13	-39
join links in word	11	-13
join links in word number		-36
join links in word of	11		-14
join links in word quantity	-21	-16
join links in word term	16		-18
join links in word verb		-6	17
join links in word word	-10	-17	-27
join links into	-19	-6	-13
join links into word at		14
join links mark	9		-10
join links mark number		92	104
join links mark number mark	-6
join links mark number term	-19	-33
join links mark number verb		-7
join links mark quantity	29
join links mark word	7	-9	11
join links mark word mark		-9
join links mark word word		27	29
join links near		30	21
join links next to		34
join links number	8		13
join links number by		7
join links number in		13
join links number in term		7
join links number of		-28	23
join links number verb	79		36
join links number verb term			-11
join links number verb word		-14
join links number word	10	-19
join links number word quantity	29	15
join links number word term		-26
join links number word verb		9
join links number word word		17
join links of	13	21	14
join links of quantity	-13	-12	18
join links of quantity at	44
join links of quantity term			-13
join links of quantity word	-6	-9	-8
join links of term in	15
join links of term quantity	-11	27
join links of term term	-36	6	-9
join links of term verb	-19	-13	59
join links of term word	-39	-10	-13
join links of verb	-16
join links of verb term		-11
join links of verb verb		9	-13
join links of verb word		-9	26
join links of word		-15	-11
join links of word in		12
join links of word quantity	-8
join links of word term		21	-25
join links of word verb		-11	-10
join links of word word	33	-24	15
join links off		22	22
join links off in		-17
join links off term word	-6	-10
join links on	9	14	27
join links on in		21	46
join links on quantity	-8	8	24
join links on quantity word	-24	-7	79
join links on term	-22	-7	-18
join links on term at		-7
join links on term by		-6
join links on term number		-9
join links on term quantity	-7
join links on term term	-17	-15	8
join links on term verb	19
join links on term word			15
join links on time word		-10
join links on verb	33	-25
join links on verb of		34	7
join links on verb term	-17
join links on verb verb	9	-6
join links on verb word	34	-12	28
join links on word		17	-20
join links on word of	49		57
join links on word quantity		-13	-21
join links on word term	16
join links on word verb		-11	13
join links on word word	-32		-9
join links onto		-9
join links out at		-9
join links out by quantity	-25
join links out of	-8
join links out of term		-13	-23
join links out of word	-7	-12
join links out on		-13	-22
join links out word verb			14
join links over	13	17	15
join links over by			-11
join links over term verb	19
join links over term word		-14	34
join links over to		-11
join links over word		8
join links quantity	8
join links quantity above	34
join links quantity at	20	-25	-19
join links quantity at term	6
join links quantity at verb	21
join links quantity before	-41
join links quantity behind word	7
join links quantity by quantity	-17	-8	-10
join links quantity for	23
join links quantity from		-35	-15
join links quantity from term	-12	-24
join links quantity in	-16	-8	-19
join links quantity mark quantity	-48
join links quantity of	16	-7	37
join links quantity of quantity	23		-17
join links quantity of term	-16		-18
join links quantity of word	-29
join links quantity off		11	-8
join links quantity off term	-7	-12
join links quantity on	25	-6
join links quantity on word	21
join links quantity over		-11
join links quantity over quantity	-9
join links quantity term	11
join links quantity term quantity		-32	-39
join links quantity term to	-17
join links quantity term verb	-9
join links quantity term word	-21	7
join links quantity to	-12	-31
join links quantity toward		-20
join links quantity under	-20
join links quantity verb		-8	-19
join links quantity verb on		27	38
join links quantity verb quantity	-19	-19
join links quantity verb term		-9
join links quantity verb to	-18
join links quantity verb word	-34	-12	-9
join links quantity word	-29	10
join links quantity word at	-13	-10
join links quantity word on	29
join links quantity word quantity	-28	-12	-25
join links quantity word term	-9	7	-14
join links quantity word to	-18
join links quantity word word		-20	-7
join links term	10
join links term at	6	-20	6
join links term at word		50
join links term behind		-18	34
join links term by	-6	-27	7
join links term from		-16
join links term of		-16
join links term of term	-6
join links term of word		-24
join links term on	-16	-14	-27
join links term on term		-20
join links term on verb		-7	-8
join links term on word		-12
join links term over	-20	-8	-39
join links term quantity	20
join links term quantity at	-21	-7	18
join links term quantity word	-11
join links term term	-23	-7
join links term term on		-13
join links term term term		-11
join links term term verb	-15	-14
join links term term word	-29	-12
join links term to			23
join links term under		-7
join links term verb	7
join links term verb quantity	-15		23
join links term verb term	-10	-7	-37
join links term verb verb		-8	-26
join links term verb word		-8	6
join links term with	31	-19
join links term word	15	-8
join links term word in		30
join links term word on	-13	-20
join links term word term	-10		6
join links term word verb	67	-9	31
join links term word word		-16	-31
join links through			9
join links through word	15		7
join links time	14	19
join links time before word		-10
join links time for	-27
join links time quantity by	55
join links time quantity word	-40
join links time word		-13	19
join links time word verb		-13	-22
join links time word word		-9	19
join links to quantity with	43
join links to term word		-12
join links to verb	14	-9	-13
join links to verb quantity	25	-16	-16
join links to verb term		-14
join links to verb verb	-45	-18
join links to verb word		-14	-18
join links to word word	-16	-9
join links toward	10		-6
join links under		37
join links under term verb			13
join links under term word	40		22
join links under word	-30		21
join links under word term	48	-7	51
join links under word word	11	-47	11
join links up	7	-6	-9
join links up by	-13
join links up in	-7	9	20
join links up on	39
join links up on quantity			29
join links up quantity		9
join links up quantity term		-9
join links up to	-14	-8	-8
join links up with	-43
join links up word	-7		-16
join links up word word	55
join links verb	16
join links verb about quantity	29	-9	-16
join links verb along	-21	52
join links verb at	-10	-9	24
join links verb at quantity	32	-25	-12
join links verb at term		14	7
join links verb at word		-7
join links verb behind	-23	-9	-15
join links verb by	10	-24	64
join links verb by quantity		-10
join links verb down		-16	-9
join links verb down quantity		-12
join links verb for	-33	-26	17
join links verb from	17	-11	7
join links verb from quantity	-38
join links verb from term	28	32	19
join links verb in	-9		13
join links verb in quantity	-31	-7
join links verb in term	-7	15
join links verb in word	-19	-19	35
join links verb into			12
join links verb of	-10	9	-8
join links verb of word		-10
join links verb off		22	11
join links verb off in		-26	7
join links verb off verb		-18
join links verb off word		-7	-13
join links verb on	17		35
join links verb on quantity			-19
join links verb on term		-11
join links verb on verb		-25	-7
join links verb on word	-12	-16	-17
join links verb out	11	-12
join links verb out at	37	-9
join links verb out of	20	-6	-24
join links verb out on		25
join links verb out quantity		-29	-45
join links verb out term	26	24
join links verb out verb	-8
join links verb over		-22
join links verb quantity	13		24
join links verb quantity at	22	-25	-21
join links verb quantity by	22	12
join links verb quantity from	65	-14
join links verb quantity in	46		13
join links verb quantity mark		-16
join links verb quantity of		-15
join links verb quantity off	48	-11	-18
join links verb quantity on	20	13	-26
join links verb quantity over	-40	-45
join links verb quantity term	-20	-16	-15
join links verb quantity to	-9
join links verb quantity under	24
join links verb quantity up	-12
join links verb quantity verb	7	-38	-33
join links verb quantity word	27		-9
join links verb term	10		21
join links verb term at		10	26
join links verb term by	-29	-13	-39
join links verb term from	-6	-8
join links verb term in	7		-19
join links verb term of		22	16
join links verb term on			56
join links verb term quantity	-6	9	70
join links verb term term	-17	18	-10
join links verb term to	22	-9	-6
join links verb term verb	-12		8
join links verb term word		-7
join links verb through		6
join links verb time			-9
join links verb time quantity	-24	-9	-27
join links verb time word			-15
join links verb to	10	17	-12
join links verb to quantity	-15
join links verb to term	27	6
join links verb to verb	10	-8
join links verb under	9	-19	-26
join links verb under word		-7
join links verb up			-6
join links verb up on		6
join links verb up quantity	-9		-21
join links verb up to	-49
join links verb up with	-7		17
join links verb up word			67
join links verb verb	-6		16
join links verb verb at	-21	-21	44
join links verb verb by	6	-15	33
join links verb verb down	-58	-35	-44
join links verb verb from	8	-12	6
join links verb verb in			24
join links verb verb into		-38	-6
join links verb verb on	-27	-21	-11
join links verb verb out	-23	-7	-19
join links verb verb over		14
join links verb verb quantity	7	23	-7
join links verb verb term	-8	-12	33
join links verb verb time	7	50	-10
join links verb verb verb	7	-8	17
join links verb verb with	-10	-19	-18
join links verb verb word	17	-17	-10
join links verb with	-12	-9
join links verb with quantity		14	-25
join links verb with term		-12	-13
join links verb with verb		-20	6
join links verb with word		-9	-13
join links verb without		-11
join links verb word	-8		-17
join links verb word at	-21	-15	-10
join links verb word by	-28
join links verb word down		-13
join links verb word for			30
join links verb word in	24	-10	-55
join links verb word mark	-59
join links verb word number		43
join links verb word of			17
join links verb word on	12		53
join links verb word out			9
join links verb word quantity	26	31	18
join links verb word term		-9	-26
join links verb word to	9	-11	24
join links verb word up			-14
join links verb word verb		-18	-18
join links verb word with		-11
join links verb word word	-11
join links with	-9
join links with quantity	19	-16	-14
join links with term quantity		-10	21
join links with term verb		47
join links with term word		-14
join links with verb term			28
join links with verb word		23
join links with word term		-11
join links with word word	-13
join links without		-8
join links word		-6
join links word about quantity	-8
join links word at		-11	-10
join links word at quantity	59	34	13
join links word at word	-21	24
join links word for		-18
join links word from		7
join links word in		6
join links word in at	19	-18	11
join links word in quantity		23
join links word in term		-13	-7
join links word in verb	12
join links word in word		33	-11
join links word mark		-22
join links word number	13	-7
join links word number off	-18
join links word number verb	-9	-17	-20
join links word number word		-15	-18
join links word of		18	41
join links word of term	26
join links word off	-11	16
join links word on			12
join links word on number		-13	-17
join links word on quantity	-9	-24	-17
join links word on term	-9	-17	-12
join links word on word	-10		44
join links word out of			-10
join links word quantity	11
join links word quantity at	8	-11	-9
join links word quantity by	9	-21
join links word quantity from	55	-7
join links word quantity in	-6	8
join links word quantity of		-15	-11
join links word quantity off	-10	-27	-15
join links word quantity on	-16	-17	-22
join links word quantity out	8
join links word quantity quantity		-12
join links word quantity term	-21	-12	-6
join links word quantity to	44
join links word quantity up	-36
join links word quantity verb	19	19	24
join links word quantity word			6
join links word term	11	-10
join links word term at		21	-13
join links word term by	-18	-24	-20
join links word term for		27	79
join links word term in	-19	7	43
join links word term mark	17
join links word term of	-13	-12	19
join links word term on	50	21	-7
join links word term quantity	-18	-14	-15
join links word term term		-7	-15
join links word term verb	-23	-11
join links word term word	-9	-16	-6
join links word time		-16	-9
join links word time word	6	20	-10
join links word to verb	17		48
join links word under			11
join links word up quantity		45
join links word up to	48	-9
join links word up word	-25	-43
join links word verb	8		6
join links word verb about	-7	-7	-25
join links word verb at	-9	-20
join links word verb behind		27	-18
join links word verb by		-23
join links word verb down	-18	-20	10
join links word verb for	45		8
join links word verb from			-30
join links word verb in	9	-16	-33
join links word verb near		-8
join links word verb number		-7
join links word verb off	-22	-20
join links word verb on			10
join links word verb out	16	-8	-24
join links word verb over		10
join links word verb quantity	34		-15
join links word verb term	-36	-19	-25
join links word verb to	6	-13	10
join links word verb up	-11	-19	-6
join links word verb verb	-16
join links word verb with			-12
join links word verb word	-6
join links word with	-15
join links word word		-7
join links word word at	-33	-12
join links word word behind	25
join links word word by	-35	-8	10
join links word word from			-7
join links word word in		-7	-14
join links word word mark	-49	-12
join links word word number		-9
join links word word of			-7
join links word word on	27	16
join links word word quantity	-10		-12
join links word word term	-14	-10	-11
join links word word to		-12	15
join links word word up		-6	-11
join links word word verb		-7	-10
join links word word with		-7
join material+area		6	8
join material+defect	15	-10
join material+fixture		14
join material+material			12
join material+part		7
join material+size	13	-15	-8
join material+surface			6
join material+tells		-15	-9
join material+tool		-8
join material+verbish		-9	-7
join material+word			-7
join material+work		-11	-9
join part+area	-7
join part+defect		-11	-9
join part+finish		-10	-6
join part+fixture		17	19
join part+material			-7
join part+part	11	15	12
join part+size	6	9
join part+tells		-18	-12
join part+tool			12
join part+work		-18	-8
join same-after	20		15
join same-after area		12	11
join same-after defect	24	-14
join same-after finish		-6
join same-after fixture	18	12	36
join same-after material	12
join same-after part	11	7	20
join same-after size	18		7
join same-after surface	9		10
join same-after tells	-6	-7	11
join same-after tool		-7
join same-after verbish	10
join same-after word		-6
join same-before area		-7
join same-before finish			-7
join same-before size	17
join same-before work		-15	-19
join size	8
join size 1			10
join size 2	-9	-11	-22
join size 3		-13	-17
join size+area	7		7
join size+defect	-12
join size+finish	-12	13
join size+fixture	12
join size+material		-6
join size+part			7
join size+size	-13	-12
join size+tells		11	-8
join size+tool			13
join size+verbish		-9
join size+work			9
join sizes 1+1	9		17
join sizes 1+2	-10		-9
join sizes 1+3	-9	-8
join sizes 2+1		-10	-18
join sizes 2+2	-6
join sizes 2+3	-10	-11	-15
join sizes 3+1		-9
join sizes 3+2		-11	-16
join sizes 3+3	-9	-17	-21
join surface+area		22	14
join surface+defect	9
join surface+finish		-11
join surface+fixture	10
join surface+surface	7	7
join surface+tool		9	-7
join surface+work		-15	17
join tells	-10		-15
join tells+finish	-7
join tells+fixture		8
join tells+material		-7
join tells+part			-6
join tells+surface		-6
join tells+tells			-11
join tells+word	-7
join tool		-9	-6
join tool+area	6	-22	-9
join tool+defect		-7
join tool+finish	-7		13
join tool+fixture		-17	-11
join tool+part			16
join tool+surface		11
join tool+tool		20	-15
join tool+word		-8
join verbish	-8		-13
join verbish+area		-8
join verbish+finish	-8	-7
join verbish+material			-6
join verbish+size		-11	-8
join verbish+tool			-7
join verbish+verbish		13
join verbish+word		-6
join verbish+work		7	6
join word	-9		-7
join word+area	-8		-9
join word+size	7
join word+tells	-12
join word+word	-7	-6
join word+work		-8	-7
join work		-9	-23
join work+area			-7
join work+finish	-12		-7
join work+fixture	-8	6	-9
join work+material	-9	-13	-7
join work+part	6	-21	-11
join work+size	-7
join work+surface		-10
join work+verbish	10	27
join work+word	7	-12	-8
kind +1 area	-12	-12
kind +1 defect	-13	-10
kind +1 finish	-10	-22
kind +1 fixture	-15	16
kind +1 material	-13	-11
kind +1 part	-24
kind +1 size	-14
kind +1 surface	-17	-6
kind +1 tells	-9
kind +1 tool	-11	-12
kind +1 verbish	-10	-23
kind +1 word	-13	-9
kind +1 work	-10	-10
kind -1 area	-21		12
kind -1 defect	-17	-28	-6
kind -1 finish	-18	-15	-27
kind -1 fixture	19	45	39
kind -1 material	39	12	17
kind -1 part	20	11	60
kind -1 size	25		9
kind -1 surface	-10	9
kind -1 tells	-11	-44	-15
kind -1 tool	-33	-13	-22
kind -1 verbish		-23
kind -1 word	-13	-11	-9
kind -1 work	23	-36	-21
kind -2 area	-22
kind -2 defect		-18	-13
kind -2 finish	-29
kind -2 fixture	38	16	24
kind -2 material	10	-6	20
kind -2 part		12	15
kind -2 surface		17
kind -2 tells	-45		-36
kind -2 tool	12	-21	-23
kind -2 verbish	-14		-14
kind -2 word	-8	-16
kind -2 work	-41	-30	-47
kind -3 defect	-7	-11	-19
kind -3 finish	-16	-20	-13
kind -3 fixture		12	8
kind -3 material	-10		7
kind -3 part	7		11
kind -3 size	-22		-15
kind -3 surface		-10	12
kind -3 tells	-16	-18	-39
kind -3 tool	-17	-14	-16
kind -3 verbish	-10	-9	-16
kind -3 word		-10	-16
kind -3 work	9	-12	-25
kind -4 area			-8
kind -4 defect		-7	-15
kind -4 finish			-23
kind -4 fixture	-6	-7
kind -4 part	-7	-13	-18
kind -4 size	-19	-14	-18
kind -4 surface	-12	-7	10
kind -4 tells	-14	-8	-28
kind -4 tool	8		11
kind -4 verbish	-6		-9
kind -4 word	-9	-10	-14
kind -4 work	15	-11	24
kind area	-12
kind defect	-7	-19	-13
kind finish	-13	-13	-15
kind fixture	11	21	20
kind here-after area		40
kind here-after defect	-7	-20
kind here-after finish		-6
kind here-after fixture	-17	15
kind here-after material		31
kind here-after part	-10	35
kind here-after surface	-8	14
kind here-after tells	-7	-10
kind here-after tool	-7
kind here-after verbish	-10	11
kind here-before area	-30	-27	-28
kind here-before defect		25	-6
kind here-before finish	-11		28
kind here-before fixture	23	23	17
kind here-before material	40	34
kind here-before part	64	43	21
kind here-before size	26	9	8
kind here-before surface	40	8
kind here-before tells	-24		-26
kind here-before tool	-14	45	25
kind here-before verbish	20	7	-19
kind here-before word		-8	-25
kind here-before work	46	17
kind material	19	12	14
kind part	15	24	24
kind size	7
kind surface			8
kind tells	-20	-14	-31
kind tool	-9		-9
kind verbish		-8	-12
kind word	-15	-16	-19
kind work		-15	-14
lead a -1		-19
lead a -2	28	-15
lead a -3	-17	-22
lead a -4	-36	-25
lead a here-after	17	29
lead a here-before	14	46
lead about -3	-16
lead about -4	-20
lead about here-after	-7
lead about here-before	38
lead all -1		37
lead all here-after		-34
lead all here-before		30
lead area -1	36	21
lead area -2	-14
lead area -3	-16	-27
lead area -4	-27	-20
lead area here-after	-11	-13
lead area here-before	21	27
lead around -1	25
lead around -2	-6
lead at -1	-9
lead at -2	-16
lead at -3	-14
lead at -4	9
lead at here-after	-13
lead at here-before	53
lead by -1	-8
lead by -3	-7
lead by -4	9
lead by here-after	-13
lead by here-before	22
lead defect -1	-8
lead defect -2	-14
lead defect -3	-20
lead defect here-after	-11
lead defect here-before	41
lead down -1	-17
lead down -2	-15
lead down -3	29
lead down here-after	-28
lead down here-before	46
lead every -1	-39
lead every -2	-44
lead every -3	-31
lead every -4	-30
lead every here-before	72
lead finish -1	10	-34
lead finish -3		27
lead finish here-after		-19
lead finish here-before	27	-75
lead fixture -1	-35	10
lead fixture -2	-21	-8
lead fixture -3	-8	7
lead fixture -4	-15	-10
lead fixture here-after	-9	-19
lead fixture here-before	57	26
lead for -1	32
lead for -3	-16
lead for -4	-31
lead for here-before	16
lead from -1	32
lead from -2	-38
lead from -3	31
lead from -4	-35
lead from here-after	-16
lead from here-before	38
lead in -1	31
lead in -2	-11	-45
lead in -3		14
lead in -4	-32	31
lead in here-after	-15	12
lead in here-before		-14
lead mark -1	20	63
lead mark -2	-25
lead mark -3	-39
lead mark -4	15
lead mark here-after		17
lead mark here-before	35	-47
lead material -1		16
lead material -2	-12	-15
lead material -3	-13	-7
lead material -4	-9	-17
lead material here-after		-20
lead material here-before	20	18
lead no -2		6
lead no here-after		35
lead number -1	-65	40
lead number -2	118	49
lead number -3		-25
lead number -4		-27
lead number here-after		-30
lead of -1	46	67
lead of -2	-34
lead of -3		-33
lead of -4	-13	-42
lead of here-after	-7	25
lead of here-before	11	-33
lead off -1	-20
lead off -3	-31
lead off here-after	-14
lead off here-before	65
lead on -1	10	-16
lead on -3		55
lead on -4	-24	-18
lead on here-after		-35
lead on here-before	11	25
lead out -2	-28
lead out -4	-31
lead out here-before	58
lead over -1	-11
lead over -2	-28
lead over -3	67
lead over here-after	-15
lead over here-before	9
lead part -1	-16	-6
lead part -3	-26	-7
lead part -4	-9	-14
lead part here-after		-17
lead part here-before	41	31
lead past -1	-38
lead past -2	10
lead quantity -1	25	21
lead quantity -2		-17
lead quantity -4	-6
lead quantity here-after	-8	-14
lead quantity here-before		53
lead role -1		-19
lead role -2		-20
lead role -3		-63
lead role -4		-7
lead role here-after		129
lead role here-before		-51
lead size -1	-13	-41
lead size -2	-18	19
lead size -3	9	-29
lead size -4		-33
lead size here-after	-9	7
lead size here-before	28	7
lead surface -1	-18	22
lead surface -2	-16
lead surface -3	-9
lead surface -4		-26
lead surface here-after	-9	-25
lead surface here-before	40	19
lead tells -1	-39	26
lead tells -3	28	33
lead tells -4		-31
lead tells here-after		-69
lead tells here-before	-15	-8
lead that -1		-32
lead that -2		9
lead that -3		12
lead that -4		-15
lead that here-after		7
lead that here-before		58
lead the -1	14	-41
lead the -2		-21
lead the -3		-33
lead the -4	11	-47
lead the here-after	-18	68
lead the here-before		-37
lead time -1	-32
lead time -2	29
lead time here-after	-11
lead time here-before	24
lead to -1		22
lead to -2	7	8
lead to -3		-20
lead to -4	13	-58
lead to here-after	-17	17
lead to here-before	21	-49
lead tool -1		-39
lead tool -2	29	-29
lead tool -3		-37
lead tool -4	-30
lead tool here-after		-22
lead tool here-before	15	58
lead under -1	-23
lead under -2	22
lead under -3	27
lead under -4	-20
lead under here-before	13
lead up -1	29
lead up -2	-15
lead up -3	-14
lead up -4	-26
lead up here-after	-10
lead up here-before	15
lead verbish -1	9	15
lead verbish -3		-8
lead verbish -4	-18	-18
lead verbish here-after	-8	-17
lead verbish here-before	37	42
lead with -1	-11	16
lead with -2	-10	25
lead with -3		-9
lead with -4		-19
lead with here-after		-36
lead with here-before	37	44
lead within -1	-31
lead within -2	69
lead within -3	-12
lead within here-before	-10
lead word -1	6
lead word -2	9
lead word -3	-10	-6
lead word -4	-19	-12
lead word here-after	-6	7
lead word here-before	29	18
lemma arrive object		-39
lemma arrive subject		57
lemma ask object	-70	64
lemma back subject		22
lemma be object	-11	-17
lemma be subject	37	22
lemma bend object		14
lemma bend subject		44
lemma bind subject		24
lemma blow object	-11	12
lemma blow subject		44
lemma bow object	-41	-56
lemma bow subject	39	10
lemma break object		70
lemma break subject		89
lemma bring object		100
lemma bubble object		-14
lemma bubble subject		49
lemma buy object		26
lemma buzz object		-38
lemma buzz subject		49
lemma call object	7	63
lemma call subject	-31
lemma catch subject		41
lemma change object		48
lemma check object	-23	70
lemma check subject	27
lemma chip object		35
lemma chip subject		48
lemma close object		42
lemma come object	-21
lemma come subject	89	-16
lemma come subject-late		-34
lemma cover object		-16
lemma crack object		35
lemma crack subject		27
lemma crack subject-late		-24
lemma crush object		-44
lemma crush subject		40
lemma cup subject		-44
lemma cut object	25
lemma do object	46	16
lemma drill object	12	-44
lemma drill subject	62
lemma drip object		-32
lemma drip subject		74
lemma drop object	-57	55
lemma drop subject	32	23
lemma dump object		-54
lemma dump subject		41
lemma fail object		25
lemma fill object		98
lemma fill subject		37
lemma find object	96	66
lemma finish object		22
lemma freeze object		-33
lemma freeze subject		41
lemma get object		-23
lemma get subject		9
lemma give object		16
lemma go object	-19	15
lemma go subject	36	-28
lemma go subject-late	-39	-51
lemma gonna object	22
lemma hang object		11
lemma hang subject	29	-35
lemma have object	-11	-13
lemma have subject	12	18
lemma have subject-late	-46	-14
lemma hit object	-10	-71
lemma hit subject	32	48
lemma hold object	29
lemma hold subject	76
lemma hum subject		-9
lemma keep object		-13
lemma keep subject		72
lemma land object	-10	-20
lemma land subject	53
lemma lay object	44
lemma leak subject		20
lemma leave object	20	53
lemma leave subject		-30
lemma level object	-35	63
lemma lift object		34
lemma lift subject		-13
lemma make object	-12	14
lemma measure object	-21	-16
lemma measure subject	32	42
lemma move object	-8	43
lemma move subject	32
lemma need object	9	31
lemma need subject	49	14
lemma nick object		58
lemma open object	-29
lemma open subject	33	33
lemma order object		74
lemma pitch object	-15
lemma plug object		-33
lemma pop object		-46
lemma pop subject		16
lemma pull object	22	37
lemma pull subject		-10
lemma pull subject-late		-54
lemma push object	-65
lemma put object		-15
lemma rattle subject		-12
lemma read object	12	32
lemma read subject	17
lemma read subject-late	32	-25
lemma rip object		-31
lemma rip subject	51	-105
lemma rub object		-43
lemma rub subject		-12
lemma run object	7	-31
lemma run subject	-28	45
lemma sag object	-29	-55
lemma sag subject	56	25
lemma sag subject-late		-15
lemma sand object		38
lemma say object	-12	114
lemma say subject	-22	-42
lemma say subject-late		18
lemma scrape object		-41
lemma scratch object		-18
lemma scratch subject		-16
lemma seat subject		-25
lemma see object		22
lemma seize subject		45
lemma send object	36
lemma set object	29	-28
lemma shim object	17
lemma show object		34
lemma sit object	9	-46
lemma sit subject	51	21
lemma sit subject-late	-13	17
lemma snap object		-12
lemma snap subject		23
lemma split object		-94
lemma squeak subject		40
lemma stain subject		61
lemma stand object	10	18
lemma stand subject	-14	-33
lemma stick object	-14	-30
lemma stick subject	24	23
lemma stick subject-late		-19
lemma strip object		-19
lemma swap object		81
lemma take object	15	24
lemma tear object		32
lemma tear subject		-17
lemma tell object	7
lemma test object	-43
lemma test subject	31
lemma think object	-31	45
lemma throw object		36
lemma touch object		-12
lemma trip object		-46
lemma trip subject		50
lemma turn object	84	-53
lemma turn subject		57
lemma use object	67	75
lemma walk object		73
lemma want object	34	26
lemma want subject	-34	37
lemma want subject-late	-58
lemma weep subject		53
lemma wobble object		-19
lemma wobble subject		54
not-carried	-45
not-carried +1 none	-15
not-carried +1 own	-10
not-carried +1 pointer	-16
not-carried +1 tells	-20
not-carried -1 none	-14
not-carried -1 own	-28
not-carried -1 person	-12
not-carried -1 pointer	-16
not-carried -1 tells	-31
not-carried -2 none	-31
not-carried -2 own	-17
not-carried -2 person	-9
not-carried -2 pointer	-42
not-carried -2 tells	-48
not-carried -3 none	-25
not-carried -3 own	-9
not-carried -3 person	-24
not-carried -3 pointer	-20
not-carried -3 tells	-12
not-carried -4 none	-19
not-carried -4 own	-18
not-carried -4 pointer	-36
not-carried -4 tells	-28
not-carried here-after own	-9
not-carried here-after person	-15
not-carried here-before none	34
not-carried here-before own	25
not-carried here-before pointer	29
not-carried here-before tells	-18
not-told		-20
not-told +1		-20
not-told -1		28
not-told -4		-12
not-told here-after		-20
number many many			70
number many one			-55
number none many			12
number none one			-7
opens-with +1	-34	-11
opens-with -1	46	-17
opens-with -2		-9
opens-with -3	-10	-14
opens-with -4	-27	-16
opens-with here-after		39
part +1 bare	-14	-11
part +1 object	-13	-18
part +1 opens	-23	-18
part +1 subject	-17	15
part +1 subject-late	-14	-17
part -1 bare	-25	-7	-9
part -1 object	-7
part -1 opens	15	7	12
part -1 subject	26	7	36
part -1 subject-late			20
part -2 bare	-17		-10
part -2 object	-12	-10	-6
part -2 opens	12	7
part -2 subject	13		28
part -2 subject-late			9
part -3 bare	-16	-8	-18
part -3 object	-11	-11	-8
part -3 opens	11	11	12
part -3 subject-late	8	-15	-12
part -4 bare		-10	-10
part -4 object	-16	-15	-20
part -4 opens			14
part -4 subject	-7	-11	-9
part -4 subject-late		-12	-32
part bare	-21	-12	-16
part bare area	-15		-7
part bare defect	-17	-15	-28
part bare finish	-19	15
part bare fixture		7	-9
part bare material	-6
part bare part		10	11
part bare size	-11	7	-17
part bare surface	-22	-16	-9
part bare tells	-14	18	-26
part bare tool	25		-21
part bare verbish	-7		22
part bare word	-18	-12	-17
part bare work	-8	9	-24
part here-after bare		-11
part here-after object	-11
part here-after opens		42
part here-after subject		55
part here-after subject-late	-19
part here-before bare	-19		-79
part here-before object	15	17
part here-before opens	43	34	-33
part here-before subject	39	23
part here-before subject-late			-24
part object	-22	-16	-18
part object area	-14		-10
part object defect	-11	-20	-12
part object finish	-14	-19	-20
part object fixture		18	22
part object part	6	17	22
part object size	7		7
part object tells	-26	-15	-21
part object tool	-19	-16	-15
part object verbish	-9	-13	-21
part object word	-18	-17	-19
part object work		16	11
part opens	19	17	13
part opens area		7	34
part opens defect	43	-23	24
part opens finish	-32	-24
part opens fixture	10	39	45
part opens material	30	12
part opens part	23	28	13
part opens size			-40
part opens surface	14	25	33
part opens tells		14	-46
part opens tool	9	7
part opens verbish	14		-15
part opens word			-8
part opens work	26	-20	6
part subject	21	16	23
part subject area	-12	7	7
part subject defect	30	-14	-13
part subject finish	61	54
part subject fixture	34	21	18
part subject material	22	18	26
part subject part	14	19	22
part subject size	16	-7	10
part subject surface	13	13	20
part subject tells	-14	-24	-43
part subject tool	8	35	21
part subject verbish		11
part subject word		-8
part subject work	-12	-32	-20
part subject-late			-7
part subject-late area	-20	-17	-17
part subject-late defect	-28		-7
part subject-late finish	-20		-12
part subject-late fixture		-7	-7
part subject-late material	17	10	20
part subject-late part	12		30
part subject-late size	48	9	-68
part subject-late surface		10	-7
part subject-late tells	-20	-17	14
part subject-late tool	-11		-8
part subject-late verbish	-16	12	15
part subject-late word	-10	-6	-17
points both -2			-30
points both -3			23
points both -4			-18
points both bare			7
points both here-before			28
points both object			-54
points both subject			35
points both subject-late			21
points em -2			-18
points em -3			14
points em -4			-14
points em bare			-22
points em here-before			21
points em object			6
points em opens			-13
points em subject			9
points em subject-late			-11
points it -1			7
points it -2			11
points it -3			-7
points it -4			-11
points it bare			-16
points it here-before			-12
points it object			-20
points it subject			31
points none -1			22
points none -3			-11
points none -4			-14
points none bare			-16
points none here-before			-21
points none object			-20
points none opens			22
points none subject			16
points none subject-late			-8
points one -1			18
points one -2			-7
points one -3			-16
points one -4			-14
points one bare			-15
points one here-before			16
points one object			-8
points one subject			16
points one subject-late			-8
points that -1			21
points that -2			10
points that -3			13
points that -4			-45
points that bare			-40
points that object			-11
points that opens			20
points that subject			27
points that subject-late			-29
points them -1			27
points them -2			18
points them -4			-63
points them bare			-21
points them here-before			13
points them object			43
points them opens			-26
points them subject			-29
points they -1			25
points they -2			14
points they -4			-40
points they bare			45
points they here-before			-33
points they object			-20
points they opens			42
points they subject			-27
points they subject-late			26
points this -1			27
points this -3			-7
points this -4			-21
points this here-before			-14
points this object			-61
points this opens			-22
points this subject			41
points this subject-late			58
points those -1			9
points those -2			29
points those -4			-39
points those here-before			-36
points those object			-26
points those opens			76
points those subject			-24
points those subject-late			27
prep about		9	25
prep above	-24	-21	-18
prep across	-21
prep after	-35	-50	-38
prep against	-44	-60	-76
prep along	-27	-13	-39
prep around	-28	-30
prep at	-26	-25	-32
prep before	-12	-13
prep behind	-21	-27	-25
prep below	18	-16	-24
prep beside			-50
prep between	-13	-30	-58
prep by	-36	-34	-53
prep down	16	14	16
prep for	-17	-6	-11
prep from	-25	-39	-50
prep here-after about		-23
prep here-after across		24
prep here-after after	-8	-31
prep here-after along		7
prep here-after around	-18	-47
prep here-after at		-15
prep here-after before	-11	-12
prep here-after behind	12	-30
prep here-after below		-79
prep here-after between	21	-17
prep here-after by	-13	-34
prep here-after down		42
prep here-after for		-11
prep here-after from		-60
prep here-after in	-10	16
prep here-after inside		-30
prep here-after into		-33
prep here-after near		-55
prep here-after of	6
prep here-after off	-7	-11
prep here-after on		13
prep here-after out		25
prep here-after past	-8	-38
prep here-after through		94
prep here-after to		-35
prep here-after toward	-15	-73
prep here-after under	29	-9
prep here-after up		55
prep here-after with	-14	-43
prep here-after without		-11
prep here-before above		-16
prep here-before along	-16	-47
prep here-before around	-34
prep here-before at	-56	-56
prep here-before before		21	-10
prep here-before behind	-26	-59
prep here-before between	-45
prep here-before by	-75	-62	-13
prep here-before down	19
prep here-before for	-28	-13	-11
prep here-before from	-104	-74	10
prep here-before in	-39	-31	12
prep here-before into		-21
prep here-before of	-7	9	-15
prep here-before off	36	-29
prep here-before on	-31	-24	-17
prep here-before out	22	-23
prep here-before over	-32	-31	-59
prep here-before through	-8
prep here-before to	-43	-83	-59
prep here-before toward	-38
prep here-before under	-54	-42	8
prep here-before up	15	-22
prep here-before with	8	-39	20
prep in	-17		-20
prep inside	-27	55	75
prep into	-29	-25	-40
prep near	-54	-54	-67
prep next	6	43	49
prep of	-12		-15
prep off	-9
prep on	-15		-11
prep onto	-18	-44	-30
prep other about	11	29	28
prep other above	-38	-26	-14
prep other across	-23	-18
prep other after	-41	-32	-38
prep other against	-9	-30	-76
prep other along	-35	-10	-38
prep other around	-17	-18
prep other at	-25	-22	-33
prep other before	-11	-15
prep other behind	-25	-17	-26
prep other below	46	6	-24
prep other beside			-50
prep other between	-6	-28	-58
prep other by	-27	-23	-56
prep other down	14	-14	17
prep other for	-17		-11
prep other from	-24	-21	-54
prep other in	-13	-7	-22
prep other inside	-10	67	75
prep other into	-28	-15	-39
prep other near	-45	-18	-67
prep other next	-13	-20	49
prep other of	-15	-7	-14
prep other off	-17
prep other on	-15	-8	-10
prep other onto	-18	-39	-30
prep other out	-28	-21	-16
prep other over	-15	-13	-31
prep other past	-7		-23
prep other per	-7	-10
prep other through	39	18	49
prep other to	-22	-30	-28
prep other toward	-14	-36	-48
prep other under	-22	-21	-41
prep other up	22	-10	22
prep other with	-18	-24	-37
prep other without	-24	-39	20
prep out	-18	-10
prep over	-15	-12	-34
prep past	-14	-15	-23
prep per	-9	-10
prep through	27	56	63
prep to	-23	-36	-30
prep toward	-30	-59	-48
prep towards		-75
prep under	-20	-22	-38
prep up	20		25
prep with	-17	-26	-36
prep without	-12	-30	20
rank after 0	-10
rank after 1	-9
rank after 2	-11	-10
rank after 3	-12	-12
rank after 4	-16	-15
rank before 0	14	17	-12
rank before 1	10	7
rank before 2	7		12
rank before 3		-11	6
rank before 4	-17	-20	-9
says copula		-8
says imperative	-7	11	17
says modal			-19
says none		6
says owed		-10
sentences -1	-34	-43	-51
sentences -1 bare	-29	-28	-43
sentences -1 object	-25	-20	-21
sentences -1 opens	-16	-27	-38
sentences -1 subject	-10	-20	-7
sentences -1 subject-late	-24	-13	-21
sentences -2	-28	-30	-50
sentences -2 bare	-16	-20	-33
sentences -2 object	-11	-17	-27
sentences -2 opens	-12	-20	-15
sentences -2 subject	-27	-8	-34
sentences -2 subject-late			-28
sentences 1	-19	-38
sentences 1 bare	-14	-30
sentences 1 object	-6	-23
sentences 1 opens	-21	-32
sentences 1 subject	-18	-37
sentences 1 subject-late	-17	-25
size 1	-16	-34	-39
size 2	17	28	39
size 3	10	43	50
stands-off-after	-10	6
subject none +1	-21	-21
subject none -1		6
subject none -3		-9
subject none -4	-11	-14
subject none here-after		10
subject none here-before	33	30
subject own +1	-10	-9
subject own -1	-18
subject own -2	-13
subject own -3	-9	-7
subject own -4	-13	-9
subject own here-after		-9
subject own here-before	41	24
subject person +1	-7	11
subject person -1		-21
subject person -2	-9	-28
subject person -3	-31
subject person -4		-25
subject person here-after	-11	9
subject person here-before	36	18
subject pointer +1	-28	-15
subject pointer -1	31
subject pointer -2	7
subject pointer -3		-10
subject pointer -4	-15	-27
subject pointer here-after	-16	31
subject pointer here-before	16
subject tells +1	-25
subject tells -1	14	-11
subject tells -2	41	-14
subject tells -3	9	20
subject tells -4	-16	-29
subject tells here-after		-18
subject tells here-before	-13	27
told -1		62
told -2		32
told -3		45
told -4		30
told defect		-19
told finish		-23
told fixture		26
told here-before		14
told material		19
told part		34
told size		-35
told surface		7
told tells		37
told tool		16
told verbish		20
told work		37
touches-before	24	20
unit angle defect	-9
unit angle fixture	-22
unit angle material	15
unit angle part	40
unit angle surface	21
unit angle verbish	-12
unit angle word	-26
unit area area	21
unit area finish	-11
unit area fixture	-38
unit area material	30
unit area part	-45
unit area size	-7
unit area surface	45
unit area tells	-27
unit area tool	-23
unit area verbish	-36
unit area word	-19
unit current area	-17
unit current defect	-45
unit current fixture	54
unit current material	-28
unit current part	17
unit current surface	-75
unit current verbish	28
unit current word	16
unit flow area	-30
unit flow defect	-28
unit flow material	-28
unit flow part	18
unit length area	-16
unit length defect	-7
unit length finish	-16
unit length fixture	14
unit length material	20	58
unit length part	9
unit length size	11
unit length tells	-13
unit length tool	-24
unit length word	-15	-27
unit length work	-13
unit none defect	-8	-19
unit none finish	-8	-13
unit none fixture	11	21
unit none material	14	11
unit none part	26	24
unit none surface		7
unit none tells	-19	-14
unit none tool	25
unit none verbish	-9	-8
unit none word	-20	-17
unit none work	60	-15
unit other area	-11
unit other defect	-30
unit other material	23
unit other surface	-17
unit other tool	14
unit other verbish	-26
unit other word	29
unit other work	-14
unit pack word		-39
unit percent area	-15
unit percent defect	-17
unit percent fixture	-21
unit percent material	14
unit percent part	-19
unit percent size	17
unit percent surface	60
unit percent tells	-58
unit percent tool	31
unit percent verbish	-40
unit percent work	-7
unit power part	-9
unit pressure area	-12
unit pressure defect	-30
unit pressure finish	-16
unit pressure fixture	-16
unit pressure material	44
unit pressure part	-71
unit pressure size	56
unit pressure surface	12
unit pressure tool	6
unit pressure verbish	-13
unit pressure word	10
unit slope area	22
unit slope defect	-7
unit slope part	17
unit slope size	11
unit slope surface	14
unit slope verbish	27
unit slope word	-39
unit temperature area	9
unit temperature defect	-11
unit temperature material	-10
unit temperature part	-14
unit temperature size	12
unit temperature surface	45
unit temperature tool	-7
unit temperature verbish	49
unit temperature word	-22
unit torque material	43
unit torque part	29
unit torque word	-19
unit voltage defect	-21
unit voltage fixture	-35
unit voltage material	-52
unit voltage part	67
unit voltage surface	-32
unit voltage verbish	-24
unit voltage word	27
unit volume area	-15
unit volume defect	-26
unit volume fixture	-31
unit volume material	-47
unit volume part	43
unit volume surface	60
unit volume verbish	22
unit volume word	-59
unit weight area	-45
unit weight defect	-34
unit weight fixture	-13
unit weight material	-10
unit weight part	80
unit weight surface	-10
unit weight verbish	-31
unit weight word	15
use buy	-9	22	28
use have	6	-7	9
use measure	6		9
use move		-8	-8
use need		-15
use other			10
use return	-18	32	-26
use say	-13		-13
use see	10	8
use use		-11	-38
where +1	-17	-13
where -1			15
where -2			6
where -3	-6	-7
where -4	-11	-16	-18
where here-after	-9
where here-before	34	23	-8
whole after about defect		-13
whole after about word		-11
whole after above material	-52
whole after across word	-13
whole after along defect		-15
whole after at area	23	-44
whole after at defect		9
whole after at fixture	48	26
whole after at material	37	-31
whole after at part	81	58
whole after at size	-34	-15
whole after at verbish	38
whole after at word	35	-9
whole after before material	31
whole after before word	-26
whole after behind defect		-23
whole after behind fixture		-18
whole after behind material		24
whole after behind surface		25
whole after behind word		-34
whole after below material	75
whole after by area		-35
whole after by defect	-38	-10
whole after by fixture	19	-31
whole after by material	51	-26
whole after by part		-17
whole after by size	-8
whole after by surface	-47	-18
whole after by verbish		-17
whole after by word	-23
whole after centers size	46
whole after deep material	-23
whole after deep part	-28
whole after deep word	-22
whole after down defect		-12
whole after down surface	-17
whole after down word	-24	8
whole after end defect		-15
whole after for defect		-16
whole after for material	-15	-28
whole after for surface		-15
whole after for word	-26	13
whole after from defect		-7
whole after from fixture	36
whole after from material	60
whole after from part	21	30
whole after from surface		-21
whole after from verbish	7
whole after from word	-22	24
whole after high surface	-14
whole after in defect		-16
whole after in finish		-15
whole after in fixture		17
whole after in material	40	-8
whole after in part		-8
whole after in size		-29
whole after in surface	-23	-19
whole after in tool		-8
whole after in verbish		-22
whole after in word	-41
whole after inside word		-31
whole after long word	-16
whole after mark defect		-14
whole after mark part		21
whole after mark surface		57
whole after mark word		50
whole after number defect		-7
whole after number material		-27
whole after number word		-25
whole after of defect	9	-19
whole after of finish	-54
whole after of material	76	-13
whole after of size	89
whole after of surface	54
whole after of word	14	-25
whole after off fixture	19	57
whole after off material		-32
whole after off part	81	6
whole after off size	-33
whole after off surface		-9
whole after off verbish	35	36
whole after off word	47
whole after on defect		-18
whole after on fixture		71
whole after on material	-14	-10
whole after on part		-9
whole after on size	-61
whole after on surface	74	-20
whole after on tells	-6
whole after on tool	36
whole after on verbish		-13
whole after on word	35
whole after out defect		-9
whole after out material	-34	-8
whole after out surface	37
whole after out verbish		-15
whole after out word	-21
whole after over fixture		7
whole after over size	-13
whole after over surface		7
whole after quantity area		55
whole after quantity defect		-13
whole after quantity finish		21
whole after quantity fixture		-11
whole after quantity material		-7
whole after quantity size		-14
whole after quantity surface		26
whole after quantity tells		-27
whole after quantity verbish		-14
whole after quantity word		-18
whole after short surface	-25
whole after short word	-56
whole after term area	-19	28
whole after term defect	17	-24
whole after term finish		-22
whole after term fixture	47	13
whole after term part	49	-7
whole after term size	49
whole after term surface		-18
whole after term tells		12
whole after term tool		-23
whole after term verbish	10	14
whole after term word	-19	-10
whole after through defect		-11
whole after through material		-26
whole after to area		9
whole after to defect		-21
whole after to material	10	14
whole after to part	-8
whole after to size	59
whole after to surface	33	15
whole after to verbish	-34
whole after to word	7	-28
whole after under defect		-25
whole after under fixture		-17
whole after under surface		-31
whole after under word	-43
whole after up defect		-21
whole after up material	-21
whole after up surface	-7
whole after up verbish	36
whole after up word	-9
whole after wide material	18
whole after wide word	-24
whole after with defect		-18
whole after with material	21	-14
whole after with part	-44	-13
whole after with verbish	-19
whole after with word	-38	-13
whole after word area	18	24
whole after word defect	-34	-13
whole after word finish		-18
whole after word fixture	-72	27
whole after word material	-10
whole after word part	-30	17
whole after word size	56
whole after word surface	17	15
whole after word tool	-22	-31
whole after word verbish	-10	-8
whole after word word		-11
whole article a	14	-11	8
whole article none	-12	-14	-23
whole article other	-10		-9
whole article the		8	14
whole behind about -2		-40
whole behind about here-after		-25
whole behind about here-before		31
whole behind above +1	-23
whole behind above -1	-12
whole behind above -2	-27
whole behind above -3	43
whole behind above here-after	27
whole behind above here-before	6
whole behind across +1	-26
whole behind across -1	26
whole behind across -3	-20
whole behind across -4	-32
whole behind across here-after	-43
whole behind across here-before	81
whole behind after +1	-20
whole behind after -1	11
whole behind after -3	-9
whole behind after -4	28
whole behind after here-before	43
whole behind along -2		12
whole behind along here-after		19
whole behind apart here-before	6
whole behind at +1	-13
whole behind at -2	-11	-17
whole behind at -3	-16	-10
whole behind at -4	-18	-11
whole behind at here-after	50	12
whole behind before +1	-13
whole behind before -1	31
whole behind before -2	-14
whole behind before -3	-14
whole behind before -4	-20
whole behind before here-after	11
whole behind before here-before	7
whole behind behind +1	-9	-11
whole behind behind -1		-40
whole behind behind -2	-8
whole behind behind -3		-11
whole behind behind -4		-7
whole behind behind here-after	64	33
whole behind behind here-before	-65	-36
whole behind below +1	-14
whole behind below -1	-14
whole behind below -2	-9
whole behind below -3	-17
whole behind below -4	-12
whole behind below here-after	51
whole behind below here-before	13
whole behind between -1	-23
whole behind between here-after	61	13
whole behind by +1	-15	10
whole behind by -1	17	-26
whole behind by -2		-33
whole behind by -3	-10	-18
whole behind by -4	-6	-14
whole behind by here-after	-12	-34
whole behind by here-before	28	-25
whole behind centers +1	7
whole behind centers -1	-16
whole behind centers -3	-6
whole behind centers -4	-11
whole behind centers here-after	36
whole behind centers here-before	-7
whole behind deep +1	-19
whole behind deep -1	-22
whole behind deep -2	-20
whole behind deep -4	-26
whole behind deep here-after	-53
whole behind deep here-before	8
whole behind down +1	-23	-29
whole behind down -1	27	-32
whole behind down -2	-14
whole behind down -3	-9	-11
whole behind down -4	-6	30
whole behind down here-after	38
whole behind down here-before	22	16
whole behind end +1	-24	-8
whole behind end -2	-6	-10
whole behind end -3	-14
whole behind end -4	-15
whole behind end here-after		-15
whole behind end here-before	26	12
whole behind for +1	-27	-17
whole behind for -1	-35	103
whole behind for -2	-31	34
whole behind for -3	-23	-12
whole behind for here-after	-30	-10
whole behind for here-before	-16	11
whole behind from +1	-6	-18
whole behind from -1	-7	-14
whole behind from -2	-16	-13
whole behind from -3	-11	-8
whole behind from -4	-9	27
whole behind from here-after	35	9
whole behind from here-before		7
whole behind high +1	-34
whole behind high -1	15
whole behind high -2	-9
whole behind high -3	-29
whole behind high -4	-28
whole behind high here-after	-28
whole behind high here-before	13
whole behind in +1	-22
whole behind in -1	18	8
whole behind in -2		-19
whole behind in -3	-28	-7
whole behind in -4		-18
whole behind in here-after	10	-21
whole behind in here-before	40	19
whole behind inside +1		-10
whole behind inside -3		-9
whole behind inside here-after		-30
whole behind inside here-before		-11
whole behind into here-after		-38
whole behind into here-before		8
whole behind long +1	-19
whole behind long -1	39
whole behind long -2	-21
whole behind long -3	-13
whole behind long -4	-22
whole behind long here-after	-50
whole behind long here-before	30
whole behind low +1	-16
whole behind low -1	-46
whole behind low -2	22
whole behind low -3	-17
whole behind low -4	-14
whole behind low here-after	-50	14
whole behind low here-before	-15	16
whole behind mark +1	-19	-6
whole behind mark -1	16	48
whole behind mark -2	-33	-10
whole behind mark -4	-20	-7
whole behind mark here-after	-27	57
whole behind mark here-before	9	20
whole behind near -2		-10
whole behind near here-after		-31
whole behind near here-before		33
whole behind number +1		-11
whole behind number -1		14
whole behind number -2		-12
whole behind number -3		15
whole behind number here-after		-8
whole behind number here-before		19
whole behind of +1	-17	-35
whole behind of -1	-13
whole behind of -3	-28
whole behind of -4	7
whole behind of here-after	67
whole behind of here-before	-15	39
whole behind off +1	-15	-19
whole behind off -1	-9	-30
whole behind off -2		-15
whole behind off -3	-7	-16
whole behind off -4	-19
whole behind off here-after	34	14
whole behind on +1		-18
whole behind on -1	-11	-25
whole behind on -2	-10	-9
whole behind on -3	-7	-23
whole behind on here-after	11	-15
whole behind on here-before		-13
whole behind out +1		9
whole behind out -1	7	-24
whole behind out -2		-14
whole behind out -3	27	-31
whole behind out -4	-10	-8
whole behind out here-after	-20	-22
whole behind out here-before		-36
whole behind over +1	-19
whole behind over -1	7	-30
whole behind over -2	-7	-15
whole behind over -3	-17
whole behind over -4	-8
whole behind over here-after	-33	26
whole behind over here-before	33	-23
whole behind past +1	-15
whole behind past -1	-36
whole behind past -2	35
whole behind past here-after	25
whole behind quantity +1	-20	-7
whole behind quantity -1	-41	-14
whole behind quantity -2	-39	16
whole behind quantity -3	13	-10
whole behind quantity -4		-7
whole behind quantity here-after	-18	-8
whole behind quantity here-before	-18	8
whole behind short +1	-11	-12
whole behind short -1	-28	46
whole behind short -2	-23
whole behind short -3	-13	-16
whole behind short -4	-14
whole behind short here-after	-18	-45
whole behind short here-before	16	-8
whole behind square +1	-18
whole behind square -1	-15
whole behind square -2	38
whole behind square -4	-26
whole behind square here-after	-52
whole behind square here-before	30
whole behind tall +1	-26
whole behind tall -1	44
whole behind tall -2	12
whole behind tall -3	-14
whole behind tall -4	-9
whole behind tall here-after	-45
whole behind tall here-before	-29
whole behind term +1	-9	-9
whole behind term -2		-21
whole behind term -4	-12	-10
whole behind term here-after	25	-8
whole behind thick +1	-37
whole behind thick -1	-8
whole behind thick -2	-12
whole behind thick here-after	10
whole behind thick here-before	-24
whole behind through -1		-15
whole behind through -2		-16
whole behind through -4		-8
whole behind through here-after		-22
whole behind time +1	-13
whole behind time -1	30
whole behind time -3	-9
whole behind time -4	-9
whole behind time here-before	24	-13
whole behind to +1	-26	-10
whole behind to -1	-10	27
whole behind to -2	-7	-7
whole behind to -3	-16	-34
whole behind to -4	-10
whole behind to here-after	10	13
whole behind to here-before	36	34
whole behind toward +1	-13
whole behind toward -1	-31
whole behind toward -2	11
whole behind toward -3	-16
whole behind toward -4	-14
whole behind toward here-after	-42
whole behind toward here-before	52
whole behind under +1	-22
whole behind under -1	35	-19
whole behind under -2	-22	8
whole behind under -3	11
whole behind under -4	-26
whole behind under here-after	-7	-9
whole behind under here-before	35	-20
whole behind up +1	8	-15
whole behind up -1		35
whole behind up -2	9
whole behind up -3	7
whole behind up -4		-12
whole behind up here-after	19	-19
whole behind up here-before	-25	7
whole behind wide +1	-23
whole behind wide -1	-14
whole behind wide -2	-18
whole behind wide -3	14
whole behind wide -4	-12
whole behind wide here-after	-11
whole behind wide here-before	20
whole behind with +1	-17	8
whole behind with -1	17	-18
whole behind with -2	-19	38
whole behind with -3		-28
whole behind with -4	35	-6
whole behind with here-after	-44	-40
whole behind with here-before	33
whole behind word +1	-17	-7
whole behind word -2	-6
whole behind word -3	-6	-8
whole behind word -4	-14	-10
whole behind word here-before	28
whole behind-verb		-9
whole between 	23
whole between @	-13
whole between a	-29
whole between a good	73
whole between about	25
whole between and	-97	-31
whole between are	13
whole between are at	-7
whole between at	20
whole between back	56
whole between be	45
whole between bow	-7
whole between by	38
whole between by about	6
whole between call for	27
whole between come		17
whole between come in	33
whole between come out	28
whole between come with		11
whole between down	49
whole between down to	-49
whole between every	15
whole between for	42
whole between for about	15
whole between from	8
whole between get		24
whole between get a		-12
whole between go		34
whole between has		27
whole between have		15
whole between have a		33
whole between hold	-14
whole between in	68
whole between is	26	12
whole between is only	8
whole between just		-9
whole between keep		-47
whole between measure	-18
whole between move	12
whole between need	-8
whole between of	41
whole between off	13
whole between on	45	-7
whole between one		-20
whole between only		-6
whole between out	8
whole between over	29
whole between read	43
whole between run	36
whole between say	18
whole between set	22
whole between sit	-8
whole between stand	38
whole between that		31
whole between the		-67
whole between to	13
whole between up	50
whole between want	43
whole between were		-7
whole between with	26	-20
whole between with a		12
whole carried	23
whole carried -1 none	16
whole carried -1 own	45
whole carried -1 person	56
whole carried -1 pointer	20
whole carried -1 tells	38
whole carried -2 none	15
whole carried -2 own	13
whole carried -2 person	35
whole carried -2 pointer	16
whole carried -2 tells	26
whole carried -3 person	-18
whole carried -3 pointer	17
whole carried -4 none	39
whole carried -4 person	42
whole carried -4 pointer	12
whole carried here-before none	18
whole carried here-before person	18
whole carried here-before pointer	34
whole carried here-before tells	52
whole counted angle	31	-7	-17
whole counted area	16
whole counted bare			12
whole counted count		-9	35
whole counted current	-29	-19	-8
whole counted gauge	-7	-14	-25
whole counted length	13	-7	-12
whole counted pack		-8	50
whole counted percent	31	-9	6
whole counted power	-42
whole counted pressure		-20	-6
whole counted slope	-39
whole counted temperature	28
whole counted time	21	-25	-11
whole counted volume			-44
whole counted weight	17	17
whole does add defect			-7
whole does add material			77
whole does add surface			-30
whole does add word			-36
whole does adjust word			-12
whole does ask area			19
whole does ask defect			21
whole does ask finish			-12
whole does ask fixture			59
whole does ask material			-22
whole does ask part			34
whole does ask size			37
whole does ask tool			29
whole does ask verbish			10
whole does ask word			14
whole does be area			22
whole does be defect			-27
whole does be finish			-38
whole does be fixture			16
whole does be material			9
whole does be part			18
whole does be surface			23
whole does be tells			-34
whole does be verbish			-7
whole does be word			-7
whole does bend defect			-31
whole does bend material			7
whole does blow defect			-20
whole does blow part			43
whole does blow surface			46
whole does blow word			-18
whole does bring area			-16
whole does bring defect			-55
whole does bring material			34
whole does bring part			50
whole does bring surface			-25
whole does bring tool			22
whole does bring verbish			41
whole does bring word			13
whole does buy material			87
whole does buy word			-12
whole does call area			-22
whole does call defect			-16
whole does call fixture			53
whole does call material			21
whole does call part			11
whole does call size			-27
whole does call surface			30
whole does call verbish			-26
whole does call word			35
whole does can word			-22
whole does cap word			-35
whole does caulk material			14
whole does change area			-41
whole does change finish			-14
whole does change fixture			11
whole does change material			69
whole does change part			-24
whole does change word			-16
whole does check area			26
whole does check defect			6
whole does check fixture			-69
whole does check material			-32
whole does check part			-56
whole does check surface			-17
whole does check tool			22
whole does check verbish			-26
whole does check word			-34
whole does chip material			56
whole does clamp defect			-17
whole does clamp material			-17
whole does clamp surface			39
whole does clamp word			-18
whole does clean area			-24
whole does clean defect			-8
whole does clean material			-14
whole does clean part			-22
whole does clean word			-31
whole does clear word			-10
whole does close area			-10
whole does close defect			-27
whole does close material			10
whole does close surface			34
whole does close word			-30
whole does come defect			-44
whole does come finish			-49
whole does come fixture			7
whole does come material			-35
whole does come part			-25
whole does come size			-24
whole does come surface			82
whole does come tells			-35
whole does come verbish			25
whole does come word			-37
whole does count word			-32
whole does cover word			-26
whole does cut area			-15
whole does cut finish			-25
whole does cut fixture			13
whole does cut part			-9
whole does cut size			-20
whole does cut surface			-34
whole does cut tells			84
whole does cut verbish			-21
whole does cut word			-9
whole does dig fixture			-38
whole does dig material			19
whole does dig part			-31
whole does dig surface			-25
whole does dig word			14
whole does do area			72
whole does do defect			32
whole does do finish			-9
whole does do fixture			7
whole does do material			15
whole does do part			11
whole does do surface			8
whole does do verbish			-15
whole does do word			-48
whole does don't defect			-9
whole does don't surface			-19
whole does don't word			-28
whole does drill area			-6
whole does drill defect			38
whole does drill fixture			53
whole does drill material			-12
whole does drill part			-8
whole does drill surface			-16
whole does drill word			-23
whole does drop defect			-27
whole does drop material			-9
whole does drop surface			-23
whole does drop word			12
whole does dry area			69
whole does dry defect			-26
whole does dry fixture			23
whole does dry material			-31
whole does dry verbish			-29
whole does dry word			-12
whole does email fixture			19
whole does email word			-19
whole does exchange word			9
whole does feather word			-11
whole does figure material			-50
whole does figure word			-24
whole does file defect			-39
whole does file fixture			-27
whole does file surface			-22
whole does file word			-17
whole does fill area			23
whole does fill defect			59
whole does fill material			-33
whole does fill part			-34
whole does fill size			9
whole does fill surface			41
whole does fill verbish			-19
whole does fill word			-36
whole does find defect			-32
whole does find material			-48
whole does find word			24
whole does finish word			-24
whole does fit material			-25
whole does fit word			-12
whole does fix area			15
whole does fix defect			-6
whole does fix material			-24
whole does fix part			-15
whole does fix surface			33
whole does fix verbish			-16
whole does fix word			-40
whole does flash surface			-9
whole does flip defect			-25
whole does flip part			-11
whole does float fixture			-50
whole does float material			-43
whole does float word			-9
whole does flush defect			-11
whole does flush fixture			-11
whole does flush material			-35
whole does flush word			-13
whole does foam word			-20
whole does fre area			-33
whole does fre defect			-29
whole does fre fixture			-36
whole does fre part			23
whole does fre word			-38
whole does get area			13
whole does get defect			20
whole does get finish			-7
whole does get fixture			41
whole does get material			7
whole does get part			-7
whole does get size			-28
whole does get surface			38
whole does get tells			-22
whole does get tool			-24
whole does get verbish			-27
whole does get word			-10
whole does give area			-28
whole does give defect			-17
whole does give part			-29
whole does give surface			-37
whole does give word			-31
whole does glue area			-12
whole does glue defect			9
whole does glue finish			-8
whole does glue fixture			-26
whole does glue material			12
whole does glue part			-32
whole does glue surface			-23
whole does glue verbish			58
whole does go area			7
whole does go defect			15
whole does go material			10
whole does go part			23
whole does go size			18
whole does go tool			12
whole does go verbish			-13
whole does go word			-12
whole does gotta word			-21
whole does grab material			49
whole does grab word			-6
whole does grind area			-43
whole does grind defect			71
whole does grind material			-21
whole does grind surface			64
whole does grind word			-28
whole does grout defect			-25
whole does grout material			-22
whole does grout word			-31
whole does hang area			-57
whole does hang defect			-8
whole does hang material			-11
whole does hang part			-26
whole does hang surface			-15
whole does hang verbish			-19
whole does hang word			-9
whole does has material			41
whole does has word			-34
whole does have area			19
whole does have finish			-25
whole does have fixture			-30
whole does have part			37
whole does have surface			24
whole does have tool			-29
whole does have verbish			-18
whole does have word			-6
whole does hit area			-32
whole does hit defect			87
whole does hit fixture			46
whole does hit material			-22
whole does hit surface			-18
whole does hit word			-11
whole does hold fixture			-11
whole does hold part			38
whole does hold surface			39
whole does hold word			-23
whole does i'll defect			-8
whole does i'll fixture			-12
whole does i'll material			-15
whole does i'll part			15
whole does i'll tool			-16
whole does i'll word			36
whole does install word			-28
whole does jack material			35
whole does jack word			12
whole does keep fixture			33
whole does keep material			15
whole does keep part			23
whole does keep surface			-32
whole does keep word			-25
whole does knock defect			21
whole does knock material			24
whole does knock surface			-33
whole does knock word			-42
whole does lay defect			37
whole does lay fixture			33
whole does lay material			-13
whole does lay surface			-15
whole does lay word			-34
whole does leave area			-17
whole does leave defect			-44
whole does leave finish			27
whole does leave material			35
whole does leave part			-15
whole does leave size			25
whole does leave tool			-22
whole does leave verbish			26
whole does leave word			-38
whole does let area			39
whole does let defect			-23
whole does let finish			25
whole does let material			38
whole does let part			-34
whole does let surface			-43
whole does let verbish			-28
whole does let word			-48
whole does lift defect			23
whole does lift material			25
whole does like surface			-9
whole does like word			-32
whole does look area			-14
whole does look defect			-10
whole does look fixture			-17
whole does look material			-24
whole does look part			14
whole does look surface			-19
whole does look verbish			7
whole does look word			33
whole does make area			43
whole does make defect			-13
whole does make fixture			-21
whole does make material			-36
whole does make part			-23
whole does make size			23
whole does make surface			30
whole does make verbish			31
whole does make word			-9
whole does measure defect			-28
whole does measure fixture			82
whole does measure material			-24
whole does measure part			-10
whole does measure verbish			-21
whole does measure word			-13
whole does move area			-32
whole does move fixture			-26
whole does move material			-10
whole does move part			-22
whole does move surface			15
whole does move verbish			-18
whole does move word			22
whole does need area			36
whole does need finish			-20
whole does need fixture			60
whole does need part			16
whole does need size			-7
whole does need surface			-43
whole does need verbish			-26
whole does need word			-13
whole does nip word			-15
whole does open area			-33
whole does open defect			47
whole does open fixture			7
whole does open material			-33
whole does open part			26
whole does open surface			-15
whole does open tells			-20
whole does open tool			-26
whole does open verbish			10
whole does open word			-37
whole does order area			-50
whole does order defect			-41
whole does order fixture			10
whole does order material			-27
whole does order part			-8
whole does order surface			-31
whole does order verbish			6
whole does order word			18
whole does pack area			-43
whole does pack defect			-27
whole does pack fixture			27
whole does pack material			37
whole does pack part			8
whole does pack surface			-7
whole does pack verbish			7
whole does pack word			-21
whole does paint area			6
whole does paint defect			-14
whole does paint fixture			32
whole does paint surface			39
whole does paint verbish			11
whole does paint word			59
whole does patch fixture			-38
whole does patch material			38
whole does patch part			-57
whole does patch surface			30
whole does patch verbish			-26
whole does patch word			34
whole does pick area			-53
whole does pick defect			-27
whole does pick part			-24
whole does pick word			23
whole does plane fixture			54
whole does plane material			-14
whole does plane part			-14
whole does plane surface			-10
whole does plane verbish			-10
whole does plane word			-21
whole does plug area			9
whole does plug defect			-34
whole does plug material			-33
whole does plug surface			-13
whole does plug word			-27
whole does pour defect			-22
whole does pour material			39
whole does pour surface			26
whole does pour word			-29
whole does prime area			-49
whole does prime defect			-16
whole does prime material			-48
whole does prime part			76
whole does prime surface			-49
whole does prime word			-30
whole does pull area			59
whole does pull defect			-11
whole does pull material			-19
whole does pull part			-22
whole does pull tells			-20
whole does pull verbish			-20
whole does pump part			29
whole does pump word			-9
whole does push material			-15
whole does push word			23
whole does put area			46
whole does put defect			-19
whole does put finish			-27
whole does put fixture			14
whole does put material			-6
whole does put part			-6
whole does put size			-8
whole does put surface			-18
whole does put tells			-19
whole does put tool			41
whole does put verbish			-17
whole does put word			-22
whole does raise part			22
whole does raise surface			-18
whole does raise word			-29
whole does rake defect			36
whole does rake material			-16
whole does rake surface			20
whole does rake word			-45
whole does read part			-28
whole does read word			36
whole does recut area			-31
whole does recut material			35
whole does recut word			-6
whole does redo defect			-33
whole does redo material			38
whole does redo part			37
whole does redo word			-28
whole does rehang defect			-24
whole does rehang word			-29
whole does replace area			-60
whole does replace defect			-34
whole does replace fixture			-30
whole does replace material			-22
whole does replace part			-15
whole does replace surface			-23
whole does replace word			-49
whole does reset defect			-35
whole does reset fixture			18
whole does reset material			-19
whole does reset part			-41
whole does reset surface			-30
whole does reset word			-19
whole does rip area			39
whole does rip defect			-16
whole does rip fixture			53
whole does rip verbish			-9
whole does rip word			-37
whole does roll area			29
whole does roll material			-10
whole does roll surface			-8
whole does roll word			9
whole does run area			-31
whole does run defect			-14
whole does run fixture			39
whole does run material			-34
whole does run part			7
whole does run size			19
whole does run tool			-8
whole does run verbish			-29
whole does run word			-53
whole does sand area			-10
whole does sand fixture			45
whole does sand part			-23
whole does sand surface			53
whole does sand word			-7
whole does say defect			9
whole does say material			-8
whole does say part			34
whole does say size			-26
whole does say surface			-27
whole does say tells			-18
whole does say tool			-16
whole does say verbish			-32
whole does say word			-41
whole does scrape area			57
whole does scrape defect			-39
whole does scrape fixture			52
whole does scrape material			-27
whole does scrape part			-25
whole does scrape surface			38
whole does scrape word			-35
whole does screw area			-20
whole does screw defect			-17
whole does screw fixture			-13
whole does screw material			36
whole does screw surface			-42
whole does screw word			-26
whole does scribe area			-32
whole does scribe defect			-27
whole does scribe material			14
whole does scribe surface			67
whole does scribe word			-27
whole does seal area			48
whole does seal defect			-22
whole does seal material			-7
whole does seal surface			19
whole does seal word			-16
whole does see area			-19
whole does see defect			-16
whole does see finish			-9
whole does see fixture			-12
whole does see verbish			-12
whole does send area			-70
whole does send defect			26
whole does send part			10
whole does send size			11
whole does send surface			-28
whole does send word			-18
whole does set area			-60
whole does set defect			-24
whole does set fixture			21
whole does set material			65
whole does set part			-25
whole does set size			-8
whole does set surface			-11
whole does set verbish			-22
whole does set word			9
whole does shim area			-34
whole does shim defect			-21
whole does shim fixture			-8
whole does shim material			20
whole does shim part			-27
whole does shim surface			-51
whole does shim verbish			-25
whole does shim word			24
whole does ship material			-36
whole does shut defect			-52
whole does shut fixture			17
whole does shut material			-20
whole does shut part			77
whole does shut word			-14
whole does sister area			-20
whole does sister defect			-27
whole does sister material			16
whole does sister part			6
whole does sister word			-13
whole does sit material			-26
whole does sit surface			9
whole does sit word			28
whole does skim part			-28
whole does skim surface			17
whole does skim word			-26
whole does snug defect			-13
whole does snug fixture			-17
whole does snug material			26
whole does snug part			-22
whole does snug surface			38
whole does splice defect			-12
whole does splice fixture			29
whole does splice material			11
whole does splice surface			10
whole does splice word			-12
whole does spray defect			-13
whole does spray material			-33
whole does spray word			25
whole does start area			39
whole does start material			-49
whole does start part			-18
whole does start word			-22
whole does stick defect			-20
whole does stick material			9
whole does stick part			25
whole does stick surface			-19
whole does stick word			-26
whole does straighten defect			-20
whole does straighten fixture			-40
whole does straighten part			29
whole does straighten word			6
whole does strap word			25
whole does strip word			-7
whole does swap defect			-19
whole does swap finish			-43
whole does swap fixture			-10
whole does swap material			7
whole does swap part			7
whole does swap size			-31
whole does swap surface			-44
whole does swap verbish			-12
whole does swap word			-15
whole does take area			28
whole does take defect			-22
whole does take finish			-21
whole does take fixture			22
whole does take part			-9
whole does take size			-11
whole does take surface			-19
whole does take tells			-20
whole does take verbish			-26
whole does take word			40
whole does tape area			-7
whole does tape defect			23
whole does tape fixture			30
whole does tape material			-12
whole does tape part			-34
whole does tape size			-21
whole does tape surface			-15
whole does tape verbish			-7
whole does tear word			-18
whole does tell area			56
whole does tell defect			-40
whole does tell fixture			9
whole does tell material			-69
whole does tell part			14
whole does tell surface			-30
whole does tell tool			-20
whole does tell verbish			-11
whole does think word			-18
whole does throw surface			29
whole does throw word			8
whole does tighten area			-33
whole does tighten defect			-26
whole does tighten fixture			-9
whole does tighten material			12
whole does tighten part			33
whole does tighten surface			11
whole does tighten word			-36
whole does touch material			-18
whole does trim area			-41
whole does trim defect			-32
whole does trim fixture			40
whole does trim material			-7
whole does trim verbish			-12
whole does trim word			-17
whole does turn area			-58
whole does turn defect			-21
whole does turn fixture			-34
whole does turn material			-7
whole does turn part			24
whole does turn tool			-28
whole does use defect			-36
whole does use fixture			-15
whole does use material			53
whole does use verbish			15
whole does use word			-32
whole does wait defect			-21
whole does wait fixture			15
whole does wait material			-8
whole does wait word			27
whole does walk area			91
whole does walk fixture			-39
whole does walk material			7
whole does walk surface			24
whole does walk verbish			-6
whole does want area			-9
whole does want defect			-41
whole does want finish			-17
whole does want fixture			34
whole does want material			9
whole does want part			-10
whole does want size			24
whole does want tool			-12
whole does wash material			20
whole does wash word			-34
whole does wire word			-16
whole does wrap part			30
whole does wrap surface			-10
whole does wrap word			-20
whole far after 0	37	-12
whole far after 13+	-19	-10
whole far after 2	13
whole far after 3-4	-18
whole far after 5-7	-15
whole far after 8-12	-21
whole far before 0	23		20
whole far before 1	20		-9
whole far before 13+	-21	-12	-21
whole far before 2	26	12
whole far before 3-4		7
whole figure-between	-10
whole flawed	-13		7
whole frame copula +1	-20	-10
whole frame copula -1			9
whole frame copula -3	-12	-8	-9
whole frame copula -4	-13	-10	-19
whole frame copula area			22
whole frame copula defect			-15
whole frame copula finish			-17
whole frame copula fixture			23
whole frame copula here-after	11	-7
whole frame copula here-before	18	8	19
whole frame copula part			22
whole frame copula size			-6
whole frame copula surface			10
whole frame copula tells			-25
whole frame copula tool			-23
whole frame copula verbish			-19
whole frame copula word			-20
whole frame copula work			25
whole frame imperative +1	-15	-16
whole frame imperative -1	45	26
whole frame imperative -2			12
whole frame imperative -3	9	-23	-6
whole frame imperative -4	-23	-22	-20
whole frame imperative defect			-11
whole frame imperative finish			-12
whole frame imperative fixture			14
whole frame imperative here-after	-23	6
whole frame imperative here-before	20	16	25
whole frame imperative part			15
whole frame imperative tells			8
whole frame imperative tool			8
whole frame imperative verbish			-27
whole frame imperative work			-21
whole frame modal +1	-19
whole frame modal -1	27	-17
whole frame modal -2		10
whole frame modal -3		-10	-13
whole frame modal -4	-18	-14	-9
whole frame modal fixture			35
whole frame modal here-after		11
whole frame modal here-before	31	15	34
whole frame modal part			-9
whole frame modal size			-14
whole frame modal tells			-30
whole frame modal tool			-25
whole frame modal verbish			19
whole frame modal word			-19
whole frame modal work			-15
whole frame none +1	-24
whole frame none -1			18
whole frame none -2	-11	-7
whole frame none -3	-12
whole frame none -4	-12		-10
whole frame none area			12
whole frame none defect			-18
whole frame none finish			7
whole frame none fixture			8
whole frame none here-after	17	-12
whole frame none here-before	20		-33
whole frame none material			17
whole frame none surface			13
whole frame none tells			-33
whole frame none verbish			-19
whole frame none word			-13
whole frame owed +1	-9	20
whole frame owed -1		-12
whole frame owed -2		-28	19
whole frame owed -3		-23
whole frame owed -4		-13	-20
whole frame owed area			29
whole frame owed defect			-16
whole frame owed finish			-27
whole frame owed fixture			12
whole frame owed here-after	-10
whole frame owed here-before	19	32
whole frame owed part			-9
whole frame owed surface			17
whole frame owed verbish			-17
whole frame owed work			35
whole frame past +1	-17	-12
whole frame past -2	-8		-9
whole frame past -3	-13		-22
whole frame past -4	-24	-10	-22
whole frame past area			-6
whole frame past defect			-17
whole frame past finish			-12
whole frame past here-after	16
whole frame past here-before	21
whole frame past surface			-8
whole frame past tool			-7
whole frame past verbish			-17
whole frame past word			-18
whole frame past work			-36
whole frame present +1	-16	-10
whole frame present -1		-10
whole frame present -2	-7	-16
whole frame present -3	-7	-6
whole frame present -4	-10		-19
whole frame present fixture			31
whole frame present here-after	9	-9
whole frame present here-before	32
whole frame present part			7
whole frame present surface			10
whole frame present tells			-31
whole frame present tool			-18
whole frame present word			-18
whole frame present work			-22
whole heading +1	-17
whole heading -1	-11
whole heading -2	-9	-17
whole heading -4		-7	-10
whole heading here-after	61
whole heading here-before	35		-31
whole is-flaw	8	-11
whole kind +1 area	-14	-7
whole kind +1 defect	-20
whole kind +1 finish	-13	-7
whole kind +1 fixture	-8	-8
whole kind +1 material	-12	-8
whole kind +1 part	-16
whole kind +1 size	-15	-8
whole kind +1 surface	-13
whole kind +1 tells	-17
whole kind +1 tool	-13	-8
whole kind +1 verbish	-11
whole kind +1 word	-14
whole kind +1 work	-7
whole kind -1 area	-16	12	12
whole kind -1 defect		-17	-7
whole kind -1 finish	-13	8	-8
whole kind -1 fixture	20	12	12
whole kind -1 material			11
whole kind -1 part	13		17
whole kind -1 size	20	-26
whole kind -1 surface			7
whole kind -1 tells	-22	-25	-12
whole kind -1 tool	-19	-18	-18
whole kind -1 verbish		-15	-6
whole kind -1 word	-6		-8
whole kind -1 work	-8	-12
whole kind -2 area	-16
whole kind -2 defect		-8	-11
whole kind -2 finish	-19
whole kind -2 fixture	13		34
whole kind -2 material		-7
whole kind -2 size	-8		11
whole kind -2 tool	-9	-7
whole kind -2 verbish	-8		-9
whole kind -2 word	-10
whole kind -2 work	-24	-7	-28
whole kind -3 area		14	15
whole kind -3 defect	-10	-7	-13
whole kind -3 finish		-10	-17
whole kind -3 fixture			6
whole kind -3 material	-9
whole kind -3 size	-18		-18
whole kind -3 surface		-7
whole kind -3 tells	-10		-30
whole kind -3 tool		-6	-7
whole kind -3 verbish	-13		-19
whole kind -3 word	-7		-12
whole kind -3 work	-13		-15
whole kind -4 defect	-12		-15
whole kind -4 finish	-13		-9
whole kind -4 material	-8		-9
whole kind -4 part	-10	-6	-7
whole kind -4 size	-12		-16
whole kind -4 surface	-6
whole kind -4 tells	-10		-19
whole kind -4 tool		11
whole kind -4 verbish	-11		-14
whole kind -4 word	-8		-13
whole kind -4 work	-7		-19
whole kind area	-9
whole kind defect		-12	-12
whole kind finish	-11	-7	-9
whole kind fixture	7	8	17
whole kind here-after area		25
whole kind here-after defect	-9	-12
whole kind here-after finish	-16	-14
whole kind here-after fixture	12	14
whole kind here-after material	21
whole kind here-after part	7	17
whole kind here-after size	22
whole kind here-after surface	18	8
whole kind here-after tells	23	-12
whole kind here-after tool	7	-20
whole kind here-after word		-8
whole kind here-before area	-20		-35
whole kind here-before defect	54	-29	-6
whole kind here-before finish	20		-13
whole kind here-before fixture	-8	20	10
whole kind here-before material	13		29
whole kind here-before part	7	7	16
whole kind here-before size	30	11	9
whole kind here-before surface	10	7
whole kind here-before tells	-8		-31
whole kind here-before tool	-20		-27
whole kind here-before verbish	19	-9	-14
whole kind here-before word	13
whole kind here-before work		-30
whole kind part			7
whole kind size	12
whole kind surface		7
whole kind tells	-6	-7	-15
whole kind tool	-10	-6	-10
whole kind verbish		-6	-14
whole kind word	-12	-8	-14
whole kind work	-13	-12	-8
whole lead a -1	-34	-10
whole lead a -2	-16	-14
whole lead a -3		-17
whole lead a -4	-20
whole lead a here-after	123	-13
whole lead a here-before	-30	15
whole lead about -3	-13
whole lead about -4	-21
whole lead about here-after	-8
whole lead about here-before	48
whole lead all here-after		-27
whole lead all here-before		18
whole lead area -1	29	13
whole lead area -2	-19	9
whole lead area -3		-15
whole lead area -4	-17	-9
whole lead area here-before	25	15
whole lead around -1	66
whole lead around -2	-13
whole lead at -3	-17
whole lead at -4	-20
whole lead at here-after	-18
whole lead by -2	-7
whole lead by -3	-17
whole lead by -4	-16
whole lead by here-after	-46
whole lead by here-before	23
whole lead defect -1	-15
whole lead defect -2	-12
whole lead defect -3	-14
whole lead defect -4	-8
whole lead defect here-after	-16
whole lead defect here-before	38
whole lead down -1	-6
whole lead down here-after	-83
whole lead down here-before	54
whole lead every -1	-10
whole lead every -2	-38
whole lead every -3	-33
whole lead every -4	-27
whole lead every here-before	38
whole lead finish here-before	-27	50
whole lead fixture -1	-37	6
whole lead fixture -2	-14
whole lead fixture -3	-14
whole lead fixture -4	-21
whole lead fixture here-after	-21	-22
whole lead fixture here-before	30	23
whole lead for -1	28
whole lead for -3	-13
whole lead for -4	-18
whole lead for here-before	66
whole lead from -1	9
whole lead from -2	8
whole lead from -3	6
whole lead from here-after	-62
whole lead from here-before	23
whole lead in -1	23
whole lead in -2	-10
whole lead in -3	-12
whole lead in -4	-24	19
whole lead in here-after		-10
whole lead in here-before	47
whole lead mark -1	-10
whole lead mark -2	-8
whole lead mark -3	-21
whole lead mark -4	-16
whole lead mark here-after		-17
whole lead mark here-before		16
whole lead material -1	-11
whole lead material -2		-14
whole lead material -3	-12
whole lead material -4	-14	-6
whole lead material here-after	-7	-15
whole lead number -1	-27	20
whole lead number -2	41	22
whole lead number -3		-12
whole lead number -4		-21
whole lead number here-after		-28
whole lead number here-before		11
whole lead of -1	49
whole lead of -2	-18
whole lead of -4	-19
whole lead of here-after	22	-26
whole lead of here-before	24	-32
whole lead off -1	12
whole lead off -2	-26
whole lead off -3	-15
whole lead off here-after	-38
whole lead off here-before	6
whole lead on -1	-32	27
whole lead on -2		19
whole lead on -3	40
whole lead on -4	-10
whole lead on here-after	-17	-7
whole lead on here-before		10
whole lead out -1	21
whole lead out -2	-14
whole lead out -3	-14
whole lead out -4	-25
whole lead out here-after	9
whole lead out here-before	15
whole lead over -1	-10
whole lead over -2	-22
whole lead over -3	36
whole lead over -4	-17
whole lead over here-after	-98
whole lead over here-before	43
whole lead part -1	-16
whole lead part -3	-31	-7
whole lead part -4	-41
whole lead part here-after	-22	-18
whole lead part here-before	24
whole lead past -1	11
whole lead quantity -1	-21	54
whole lead quantity -2	-18
whole lead quantity -3	37	-23
whole lead quantity -4		-11
whole lead quantity here-after	22	-13
whole lead quantity here-before	-18	22
whole lead role -1		-6
whole lead role -2		-23
whole lead role -3		-13
whole lead role -4		-14
whole lead role here-after		32
whole lead role here-before		-35
whole lead size -1		-33
whole lead size -2	-16	-11
whole lead size -3	-11	-8
whole lead size -4		-8
whole lead size here-after	-17	-18
whole lead size here-before	16	20
whole lead surface -2	-13	13
whole lead surface -3	-23	8
whole lead surface -4		-9
whole lead surface here-after	-21	-24
whole lead surface here-before	19
whole lead tells -1	9
whole lead tells -3	9	-9
whole lead tells -4		-6
whole lead tells here-after		-37
whole lead tells here-before		-31
whole lead that -1		-37
whole lead that -2		27
whole lead that -3		-19
whole lead that -4		-23
whole lead that here-after		44
whole lead the -1	-26	19
whole lead the -2	-19	-14
whole lead the -3	-6	-12
whole lead the -4	-22	-17
whole lead the here-after	114
whole lead the here-before	-34	-10
whole lead time -1	58
whole lead time -2	-25
whole lead time -3	21
whole lead time here-after	-38
whole lead time here-before	-65
whole lead to -1	24	64
whole lead to -2		-23
whole lead to -3	-8	-23
whole lead to -4		-14
whole lead to here-after	-17	9
whole lead to here-before	-7	21
whole lead tool -1	35	-41
whole lead tool -2		-11
whole lead tool -3		-6
whole lead tool -4	-14
whole lead tool here-after		-24
whole lead tool here-before	-20	13
whole lead under -1	26
whole lead under -2	28
whole lead under -3	-10
whole lead under -4	-9
whole lead under here-before	-21
whole lead up -1	36
whole lead up -3	-33
whole lead up -4	-22
whole lead up here-after	-14
whole lead up here-before	31
whole lead verbish -2		-17
whole lead verbish -3	-11	-18
whole lead verbish -4	-13	-10
whole lead verbish here-after	32	-11
whole lead verbish here-before	18
whole lead with -1	-19	-43
whole lead with -2	28	-13
whole lead with -3		23
whole lead with -4		-6
whole lead with here-after	67	14
whole lead with here-before	-29	13
whole lead within -1	-43
whole lead within -3	16
whole lead within here-before	10
whole lead word -1		-10
whole lead word -2		-12
whole lead word -3	-8
whole lead word -4	-11	-6
whole lead word here-after	15
whole lead word here-before	26
whole lemma ask object	-61	22
whole lemma be object	9	-18
whole lemma be subject-late	28	22
whole lemma blow object	24	-37
whole lemma bow object	-17	-31
whole lemma bow subject	-9
whole lemma break object		-13
whole lemma bring object		20
whole lemma bubble object		41
whole lemma bubble subject		11
whole lemma buzz object		-20
whole lemma call object	8
whole lemma call subject	55
whole lemma check object	24
whole lemma check subject	17
whole lemma chip object		-23
whole lemma come object	-23	-34
whole lemma come subject	7	-22
whole lemma come subject-late		-33
whole lemma crack object		9
whole lemma crack subject		21
whole lemma crack subject-late		51
whole lemma crush object		24
whole lemma crush subject		9
whole lemma cut object		-22
whole lemma do object	-27	55
whole lemma drill object		6
whole lemma drop object	-42	47
whole lemma drop subject		18
whole lemma dump object		-28
whole lemma fill object		41
whole lemma find object	82	21
whole lemma freeze object		-13
whole lemma freeze subject		16
whole lemma get object	54	-14
whole lemma get subject	35	-9
whole lemma get subject-late	-33	19
whole lemma give object		27
whole lemma go object	-20	-9
whole lemma go subject	7	13
whole lemma go subject-late	-10	48
whole lemma hang object	26	-24
whole lemma hang subject		-14
whole lemma have object	59	-6
whole lemma have subject-late		17
whole lemma hit object	6	-42
whole lemma hit subject		-14
whole lemma hold object	-8
whole lemma hold subject	9
whole lemma keep object		20
whole lemma keep subject		-8
whole lemma keep subject-late		-73
whole lemma land object	33	-12
whole lemma land subject		-8
whole lemma lay object	24
whole lemma leak object		-38
whole lemma leave object	38	10
whole lemma leave subject	16
whole lemma level object	-8
whole lemma lift subject		-10
whole lemma make object	-27
whole lemma measure object	66
whole lemma miss object		-15
whole lemma move object	-7	54
whole lemma need object		7
whole lemma need subject	17	-7
whole lemma open object	-70	-8
whole lemma patch object		63
whole lemma pitch object	-89
whole lemma plane object	-28
whole lemma pull object	-16	-22
whole lemma pull subject		-37
whole lemma pull subject-late		-10
whole lemma push object	6
whole lemma put object	22	7
whole lemma read object	29	-8
whole lemma read subject		-15
whole lemma read subject-late	69
whole lemma rip subject	-8
whole lemma rub object		-44
whole lemma rub subject		-13
whole lemma run object	7
whole lemma run subject	27
whole lemma sag object		-37
whole lemma say subject	32	-18
whole lemma scrape object		-26
whole lemma scratch object		34
whole lemma screw object	-40
whole lemma see object	-20
whole lemma send object	-18
whole lemma set object	-30	48
whole lemma shim object	54
whole lemma show object		20
whole lemma sit object	23	-34
whole lemma sit subject-late	30	26
whole lemma snap object		-24
whole lemma snap subject		7
whole lemma stain object		31
whole lemma stand object	-9	-20
whole lemma stand subject	18	-32
whole lemma stick object	-7	-47
whole lemma stick subject	10
whole lemma stick subject-late		37
whole lemma stop object		-8
whole lemma strip object		11
whole lemma swap object		54
whole lemma take object	34	36
whole lemma tear object		20
whole lemma tell object	-12	-23
whole lemma test object	-9
whole lemma think object	59	8
whole lemma trace object		-14
whole lemma trip object		-13
whole lemma turn object	-26	-51
whole lemma turn subject		19
whole lemma use object	21	-26
whole lemma walk object		29
whole lemma want object	32
whole lemma want subject	31	10
whole lemma want subject-late	-29
whole not-carried	-30
whole not-carried +1 none	-16
whole not-carried +1 own	-14
whole not-carried +1 person	16
whole not-carried +1 pointer	-18
whole not-carried +1 tells	-14
whole not-carried -1 none	-16
whole not-carried -1 own	-22
whole not-carried -1 person	-39
whole not-carried -2 none	-20
whole not-carried -2 own	-14
whole not-carried -2 person	-13
whole not-carried -2 pointer	-19
whole not-carried -2 tells	-24
whole not-carried -3 none	-18
whole not-carried -3 own	-13
whole not-carried -3 person	-24
whole not-carried -3 pointer	-19
whole not-carried -3 tells	-8
whole not-carried -4 none	-24
whole not-carried -4 own	-19
whole not-carried -4 person	-25
whole not-carried -4 pointer	-21
whole not-carried here-after none	13
whole not-carried here-after own	23
whole not-carried here-after person	-50
whole not-carried here-after pointer	41
whole not-carried here-after tells	82
whole not-carried here-before none	19
whole not-carried here-before own	16
whole not-carried here-before person	13
whole not-carried here-before pointer	24
whole not-carried here-before tells	12
whole not-told		-12
whole not-told +1		-9
whole not-told -1		11
whole not-told -3		-7
whole not-told here-after		-12
whole number many many			6
whole number many one			-39
whole number none many			6
whole number none one			-12
whole opens-with +1	-23	-6
whole opens-with -1	16	-15
whole opens-with -2	-10
whole opens-with -3		-15
whole opens-with -4	-14	-11
whole opens-with here-after	46	10
whole part +1 bare	-18
whole part +1 object	-14	-10
whole part +1 opens	-20
whole part +1 subject	-16
whole part +1 subject-late	-16
whole part -1 bare	-14
whole part -1 object	6
whole part -1 subject-late		7	12
whole part -2 bare	-13
whole part -2 object	-7	-6
whole part -2 subject-late	6		14
whole part -3 bare	-13		-9
whole part -3 object	-12	-7	-13
whole part -3 subject-late	8	-7
whole part -4 bare			-13
whole part -4 object	-14	-6	-15
whole part -4 subject	-7		-10
whole part -4 subject-late		-7
whole part bare			-8
whole part bare area	-7
whole part bare defect	-12	-16	-30
whole part bare finish		-14	33
whole part bare fixture		12	19
whole part bare material			10
whole part bare size		-8	-11
whole part bare tells	11	13	16
whole part bare tool	6		-18
whole part bare verbish		-16	-30
whole part bare word			-11
whole part bare work	-9
whole part here-after bare	17	-11
whole part here-after object	7
whole part here-after subject	30
whole part here-before bare	35	11	-15
whole part here-before object	31		8
whole part here-before opens	9		-35
whole part here-before subject			11
whole part here-before subject-late	19	22
whole part object		-10	-10
whole part object area	-12	10	8
whole part object defect	12	-11	-6
whole part object finish	-14	-7	-13
whole part object fixture		8	17
whole part object material		-7
whole part object part		8	10
whole part object size	15
whole part object surface	8
whole part object tells	-14	-12	-19
whole part object tool	-15	-9	-14
whole part object verbish			-13
whole part object word	-14	-9	-13
whole part object work	-10		17
whole part opens area	-7		18
whole part opens defect			-13
whole part opens finish			-19
whole part opens fixture			10
whole part opens material			-8
whole part opens size	11	-9	-16
whole part opens surface	-8
whole part opens tells	11		-28
whole part opens tool	-13	-6
whole part opens verbish	-12	-11	-13
whole part opens word			-8
whole part opens work	-15		-33
whole part subject area	-8
whole part subject defect	-18		-37
whole part subject finish	34	22
whole part subject part	-7
whole part subject size			8
whole part subject tells	-7	-7	-31
whole part subject tool		-7	7
whole part subject verbish	-6		-15
whole part subject work	-12	-14
whole part subject-late	6	9	6
whole part subject-late area	-8
whole part subject-late defect	-56	-19	-6
whole part subject-late finish	-24	-10
whole part subject-late fixture	36	18	28
whole part subject-late material			-18
whole part subject-late part	29	7	25
whole part subject-late size	27		-36
whole part subject-late surface	8	30	22
whole part subject-late tells	-7	40	70
whole part subject-late tool	8	25
whole part subject-late verbish	-18	-22	14
whole part subject-late word	-10		-10
whole points both -2			-42
whole points both -3			31
whole points both -4			47
whole points both bare			49
whole points both here-before			-59
whole points both object			-36
whole points both subject			-20
whole points em -1			-16
whole points em -2			-19
whole points em -4			-10
whole points em bare			-6
whole points em here-before			-9
whole points em object			-21
whole points em subject			-16
whole points em subject-late			-11
whole points it -3			-7
whole points it -4			-17
whole points it here-before			-15
whole points it object			-15
whole points it opens			-7
whole points none -1			8
whole points none -3			-17
whole points none -4			-15
whole points none bare			-10
whole points none here-before			28
whole points none object			-9
whole points none subject-late			27
whole points one -1			18
whole points one -3			-16
whole points one -4			-8
whole points one here-before			42
whole points one opens			15
whole points one subject			15
whole points that -1			17
whole points that -2			22
whole points that -4			-36
whole points that bare			-21
whole points that here-before			27
whole points that object			15
whole points them -1			18
whole points them -2			-29
whole points them -3			-19
whole points them -4			-46
whole points them bare			-43
whole points them object			-10
whole points them opens			-37
whole points them subject-late			-37
whole points they -1			-19
whole points they -2			-8
whole points they -4			-23
whole points they bare			-14
whole points they here-before			-30
whole points they object			-16
whole points they subject			-26
whole points this -2			59
whole points this -3			-21
whole points this -4			-33
whole points this here-before			-37
whole points this object			-12
whole points this opens			-8
whole points this subject			-15
whole points this subject-late			45
whole points those -1			10
whole points those -2			-19
whole points those -3			10
whole points those -4			-15
whole points those bare			-26
whole points those here-before			15
whole points those object			19
whole points those opens			-9
whole points those subject-late			-20
whole prep about	42	-13	9
whole prep above	-6		15
whole prep across	-18	12	19
whole prep after	-21	-21	-27
whole prep against	-20	-8	-37
whole prep along	-26	-15	-22
whole prep around		28	25
whole prep at			-14
whole prep before	-11		-21
whole prep behind		24	25
whole prep below	68		-23
whole prep beside		30	-14
whole prep between		-12	-51
whole prep by	-20		-12
whole prep down	17	-19	-14
whole prep for		11
whole prep from	-8	-14	-31
whole prep here-after about		-26
whole prep here-after above	20	-43
whole prep here-after across	-11	17
whole prep here-after after	-28	-21
whole prep here-after along	34
whole prep here-after around	-27	43
whole prep here-after at	34
whole prep here-after before	-9
whole prep here-after behind	35	56
whole prep here-after below	66	-24
whole prep here-after between	25
whole prep here-after by	-14
whole prep here-after down		-23
whole prep here-after for		23
whole prep here-after from	35	-26
whole prep here-after in		19
whole prep here-after inside		-9
whole prep here-after into		-12
whole prep here-after near		-37
whole prep here-after of	66
whole prep here-after off	51
whole prep here-after on	-9	7
whole prep here-after out		-23
whole prep here-after over	-9
whole prep here-after past	7	-24
whole prep here-after through		31
whole prep here-after to	-11	-15
whole prep here-after toward	-40	-29
whole prep here-after under	-18	-11
whole prep here-after up	53	10
whole prep here-after with	-38	-25
whole prep here-before above		53
whole prep here-before along	-48	-53
whole prep here-before around	26	78
whole prep here-before at	-29		64
whole prep here-before before		23	-26
whole prep here-before behind	28	34
whole prep here-before between	-32
whole prep here-before by	-48	19	-11
whole prep here-before down	30
whole prep here-before for		62	-46
whole prep here-before from	-56	-26	-8
whole prep here-before in	-23	8
whole prep here-before into		-28
whole prep here-before of	20	23	10
whole prep here-before off	-25	50
whole prep here-before on		18	23
whole prep here-before out	-9	-17
whole prep here-before over	18	26	-50
whole prep here-before through	-25
whole prep here-before to	-10	19	-26
whole prep here-before toward	-20
whole prep here-before under	21	48	-20
whole prep here-before up	-20	-19
whole prep here-before with	43	-12	7
whole prep in	-13	8
whole prep inside	-22	7	27
whole prep into	-22	-21	-22
whole prep near	-43	36
whole prep next	-16	-7	-12
whole prep off	16		-8
whole prep on		7	8
whole prep onto	-9	-8
whole prep other about	46		8
whole prep other above	-31		18
whole prep other across	-24		19
whole prep other after	-13	-15	-23
whole prep other against	-28	-8	-37
whole prep other along	-29		-18
whole prep other around		-15	22
whole prep other at	-11		-17
whole prep other before	-10	-11	-18
whole prep other behind	-10		22
whole prep other below	21	12	-23
whole prep other beside			-14
whole prep other between	6	9	-51
whole prep other by	-13	-6	-13
whole prep other down	8	-15	-13
whole prep other from	-19	-7	-33
whole prep other in	-10
whole prep other inside	-19	14	27
whole prep other into	-19	-15	-24
whole prep other near	-28	41
whole prep other next	-10		-12
whole prep other of	-9
whole prep other off	-10		-7
whole prep other on			8
whole prep other onto	-9	-15
whole prep other out	-20
whole prep other past	-17	-20	-50
whole prep other through		-7	11
whole prep other to	-6	-14	-18
whole prep other toward		-14	-29
whole prep other under	7	10	-15
whole prep other up	-7	-7
whole prep other with	-11		-22
whole prep other without	-12	-13
whole prep out	-18	-12
whole prep over			-9
whole prep past	27	-25	-50
whole prep per	-26
whole prep through	-10		10
whole prep to	-10	-14	-20
whole prep toward	-30	-27	-29
whole prep towards		-46
whole prep under		13	-17
whole prep up		-7
whole prep with	-9	-11	-22
whole prep without	-15	-10
whole rank after 0		-10
whole rank after 1	-18
whole rank after 2	-10
whole rank after 3	-12
whole rank after 4	-19
whole rank before 0	17
whole rank before 3	-8	-6
whole rank before 4	-15	-8	-19
whole says copula		-10	-9
whole says imperative	-7	14	7
whole says modal	-7
whole says none	-7	-8	-9
whole says owed	-7		-9
whole says present		-8	7
whole sentences -1	-26	-12	-23
whole sentences -1 bare	-22	-15	-20
whole sentences -1 object	-23		-13
whole sentences -1 opens	-9	-8	-18
whole sentences -1 subject	-7
whole sentences -1 subject-late	-9
whole sentences -2	-22	-9	-26
whole sentences -2 bare	-13		-25
whole sentences -2 object	-15		-17
whole sentences -2 opens	-10		-9
whole sentences -2 subject	-13		-9
whole sentences -2 subject-late		-9
whole sentences 1	-17	-13
whole sentences 1 bare	-15	-9
whole sentences 1 object	-8	-8
whole sentences 1 opens	-17
whole sentences 1 subject	-15
whole sentences 1 subject-late	-14	-16
whole size 1	6
whole size 2	-14		-14
whole size 3	-16	-12	-14
whole subject none +1	-21	-8
whole subject none -2	-8
whole subject none -3	-10	-8
whole subject none -4	-11	-8
whole subject none here-after	17	-7
whole subject none here-before	23
whole subject own +1	-20	-10
whole subject own -1	-8
whole subject own -2	-11
whole subject own -3	-9
whole subject own -4	-18
whole subject own here-after		-13
whole subject own here-before	15	7
whole subject person +1	13	18
whole subject person -1		-39
whole subject person -2	-7	-15
whole subject person -3	-14	21
whole subject person -4		-11
whole subject person here-after	-7
whole subject person here-before	-13	-13
whole subject pointer +1	-19	-15
whole subject pointer -1	10	-8
whole subject pointer -2		-16
whole subject pointer -3	-10	-12
whole subject pointer -4	-14	-11
whole subject pointer here-after	10	12
whole subject pointer here-before	35
whole subject tells +1	-16	-8
whole subject tells -1	17	-17
whole subject tells -2	9	-14
whole subject tells -3		-10
whole subject tells -4	-8	-7
whole subject tells here-after	83
whole subject tells here-before	20	10
whole told -1		26
whole told defect		-8
whole told finish		14
whole told fixture		14
whole told here-after		11
whole told part		6
whole told size		-16
whole told surface		12
whole told tells		23
whole told work		-12
whole touches-after	40	-9
whole touches-before	23	7
whole unit angle fixture	-11
whole unit angle material	-18
whole unit angle part	9
whole unit angle surface	32
whole unit angle verbish	31
whole unit angle word	-29
whole unit area area	11
whole unit area defect	84
whole unit area finish	-30
whole unit area fixture	-32
whole unit area part	-28
whole unit area size	-10
whole unit area tool	-16
whole unit area verbish	-26
whole unit area word	-25
whole unit current area	-19
whole unit current defect	-39
whole unit current fixture	-21
whole unit current material	-29
whole unit current verbish	-23
whole unit flow defect	-40
whole unit flow fixture	36
whole unit flow material	-20
whole unit flow part	-10
whole unit flow word	-50
whole unit length area	-13
whole unit length defect	15
whole unit length finish	-12
whole unit length size	10
whole unit length tells	-10
whole unit length tool	-13
whole unit length word	-11
whole unit length work	-12
whole unit none defect	-20	-12
whole unit none finish		-7
whole unit none fixture	24	8
whole unit none size	19
whole unit none surface	7	7
whole unit none tells	6	-7
whole unit none tool	-9	-6
whole unit none verbish		-6
whole unit none word	-7	-8
whole unit none work		-12
whole unit other area	-23
whole unit other material	-27
whole unit other part	-18
whole unit other tool	18
whole unit other verbish	-24
whole unit other word	12
whole unit other work	-11
whole unit percent defect	-37
whole unit percent finish	16
whole unit percent fixture	9
whole unit percent material	-20
whole unit percent part	-37
whole unit percent size	31
whole unit percent surface	6
whole unit percent tells	-47
whole unit percent tool	12
whole unit percent verbish	-29
whole unit percent work	-11
whole unit power part	-36
whole unit power word	11
whole unit pressure area	-21
whole unit pressure defect	-26
whole unit pressure finish	-14
whole unit pressure fixture	-39
whole unit pressure material	-11
whole unit pressure part	-29
whole unit pressure surface	-13
whole unit pressure tool	-10
whole unit pressure word	-39
whole unit slope fixture	-20
whole unit slope part	-8
whole unit slope size	29
whole unit slope surface	13
whole unit slope word	-43
whole unit temperature defect	-36
whole unit temperature fixture	18
whole unit temperature material	-21
whole unit temperature part	-20
whole unit temperature size	-25
whole unit temperature verbish	7
whole unit temperature word	-35
whole unit torque part	-17
whole unit torque word	-20
whole unit voltage defect	-52
whole unit voltage fixture	-29
whole unit voltage material	8
whole unit voltage part	66
whole unit voltage surface	17
whole unit voltage verbish	-29
whole unit voltage word	-23
whole unit volume defect	-42
whole unit volume fixture	14
whole unit volume part	30
whole unit volume surface	-10
whole unit volume word	-51
whole unit weight area	-28
whole unit weight defect	-10
whole unit weight fixture	-23
whole unit weight material	-10
whole unit weight part	16
whole unit weight surface	39
whole unit weight verbish	41
whole unit weight word	-19
whole use buy	-18		29
whole use have	19		23
whole use measure	7	-7	-7
whole use move		-10	-10
whole use need		-10
whole use return		-20
whole use say			12
whole use see		-26	-14
whole use use	-10	-20	-13
whole use work	-9		-8
whole where +1	-19	-10
whole where -3	-10	-7	-10
whole where -4	-13	-8	-18
whole where here-after	10
whole where here-before	21
`;
