/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-14
after about word		-31
after along defect		-25
after at area		48
after at defect		-21
after at fixture	-8	-10
after at material	-13	14
after at part		18
after at size		-58
after at surface		38
after at verbish		-17
after at word	-6
after behind defect		-25
after behind fixture		-30
after behind material	-9
after behind word		-12
after by area		21
after by defect		-31
after by fixture	-12	28
after by material	-6	-51
after by part	-23	61
after by word	-12
after deep word	-13
after down defect		-20
after down word	-9
after end defect		-16
after for defect		-22
after for material	-13
after from defect		15
after from fixture	-7
after from part		-10
after from surface		-50
after from verbish		-11
after from word	-8	41
after high word	-7
after in area		-15
after in defect		-14
after in fixture		-23
after in material		28
after in part		94
after in surface		27
after in tool		-13
after in word	-11
after inside word		-36
after long word	-9
after mark defect		-16
after mark material		24
after mark word		-39
after number material		-51
after of defect		-40
after of finish	-8
after of material	28
after of surface	23
after of verbish	-7
after of word		46
after off defect		-12
after off material	-14	-9
after off part	-10	50
after off surface	-8	53
after off verbish	-7	-9
after off word		-21
after on area		-9
after on defect		-25
after on fixture		20
after on material	-9	85
after on part		-65
after on size	-11
after on surface	8	43
after on verbish		26
after on word	-10
after out defect		-33
after out material		38
after out part		63
after out verbish		-22
after out word		-27
after over defect		-14
after over material	-8
after over size	-10
after quantity area		8
after quantity defect		-24
after quantity fixture		33
after quantity material		25
after quantity part		44
after quantity size		40
after quantity surface		-63
after quantity verbish		19
after quantity word		10
after short surface	-9
after short word	-6
after term area		14
after term defect		-39
after term finish	9	-49
after term fixture	-7	51
after term part	48	43
after term surface	-11	-16
after term tells		-22
after term verbish	-13	59
after term word	18	36
after through defect		-12
after to defect		-23
after to material		-20
after to part	-13
after to word		-81
after under defect		-51
after under fixture		-47
after under word	-11
after up defect		-11
after up material	-14
after up word	-7
after wide word	-7
after with defect		-28
after with material	-6
after with part		10
after with word		26
after word area	-17	44
after word defect		-30
after word finish		31
after word fixture	-31	13
after word material		37
after word part		28
after word size	11	8
after word surface		23
after word tells		-11
after word tool		-19
after word verbish	-14	19
article a		-25
article none		-9	-13
article other	-12	-15	-21
article the	13	27	25
behind about +1		-15
behind about -1		22
behind about -2		-53
behind about -3		-21
behind about -4		-10
behind about here-before		46
behind above +1	-16
behind above -1	35
behind above -2	-17
behind above here-before	-33
behind across +1	-32
behind across -1	95
behind across -2	-60
behind across -3	-20
behind across -4	-38
behind across here-after	-27
behind across here-before	19
behind after +1	-22
behind after -1	-19
behind after -3	-19
behind after -4	11
behind after here-before	59
behind along -1		-11
behind along -2		-8
behind along here-after		-13
behind along here-before		58
behind apart here-before	43
behind at +1	-25	-15
behind at -1	-25
behind at -2	30	-38
behind at -3	-9	-8
behind at -4	6	-25
behind at here-before	41	56
behind before +1	-15
behind before -1	80
behind before here-after	-10
behind before here-before	-22
behind behind +1	-15	-22
behind behind -1	42	29
behind behind -2	-32
behind behind -3		-19
behind behind -4	-28	-22
behind behind here-after	-8	-8
behind behind here-before	22	14
behind below +1	-19
behind below -1	-6
behind below -2	28
behind below -3	-17
behind below -4	-9
behind below here-before	21
behind between here-after	-14
behind by +1	-20	-16
behind by -1		-26
behind by -2	-20	-65
behind by -3	-7	-14
behind by -4	18	58
behind by here-after	-13
behind by here-before	36	45
behind centers +1	58
behind centers -1	-32
behind centers -4	-33
behind deep -1	16
behind deep -2	-29
behind deep -3	-16
behind deep -4	-37
behind deep here-after	-33
behind deep here-before	44
behind down +1	-14	-23
behind down -1	8	-37
behind down -2	-44	14
behind down -3	-25	-37
behind down -4	29
behind down here-after		33
behind down here-before	38	44
behind end +1	-20	-8
behind end -1	8	8
behind end -2		-10
behind end -4	-13	-20
behind end here-after		-15
behind end here-before	26	29
behind for +1	-23	-33
behind for -1	49	95
behind for -2	-43	36
behind for -3	35	-47
behind for -4	-30	-30
behind for here-after	-16	-56
behind for here-before	19
behind from +1	-23	-33
behind from -1	20	-41
behind from -2	-43	-46
behind from -3	-39
behind from -4	-8	55
behind from here-after	12	7
behind from here-before	60	39
behind high +1	-29
behind high -1	-6
behind high -2	9
behind high -3	-31
behind high -4	14
behind high here-after	-17
behind high here-before	57
behind in +1	-21	28
behind in -1		-18
behind in -2	9	-31
behind in -3	-17
behind in -4	7	-24
behind in here-after	-7	12
behind in here-before	25	19
behind inside here-after		-43
behind inside here-before		42
behind into here-after		-16
behind into here-before		-28
behind long +1	8
behind long -1	55	9
behind long -2	-21
behind long -3	-7
behind long -4	-33
behind long here-after	-33
behind low +1	-17
behind low -2	29
behind low -3	-24
behind low -4	-21
behind low here-after		-15
behind low here-before	27
behind mark +1	-14	-24
behind mark -1	14	-11
behind mark -2	-45	44
behind mark -3		-32
behind mark -4	-12	-38
behind mark here-after	-9	-15
behind mark here-before	7	43
behind near +1		-10
behind near -1		28
behind near here-before		17
behind number +1		-39
behind number -1		17
behind number -2		-15
behind number -3		41
behind number -4		-52
behind number here-after		10
behind number here-before		9
behind of +1	-31	-62
behind of -1	37	48
behind of -2	-7	16
behind of -3	-42	7
behind of -4		-12
behind of here-after	17	-8
behind of here-before	-9	-17
behind off +1	-25	-17
behind off -1	13	-14
behind off -2		-20
behind off -3	-11	-57
behind off -4	-27	58
behind off here-after	-13	38
behind off here-before	67	-21
behind on +1		-25
behind on -1	7	-14
behind on -2	-24
behind on -3	36	-10
behind on -4	-30	-9
behind on here-after	-12	10
behind on here-before	21	32
behind out +1	-20	-6
behind out -1		-38
behind out -2	14	-34
behind out -3	-6	27
behind out -4	-41	20
behind out here-after	-10	-8
behind out here-before	47	49
behind over +1	-21	-17
behind over -1	32
behind over -2	-38	-46
behind over -3	-9	-20
behind over -4	-23	-14
behind over here-after	-13	28
behind over here-before	47	50
behind past +1	-12
behind past -1	33
behind past here-after	-11
behind past here-before	14
behind quantity +1	-19	-7
behind quantity -1	-23	8
behind quantity -2	-46
behind quantity -3	-9	-26
behind quantity -4	40	-15
behind quantity here-after	-15	9
behind quantity here-before	53	19
behind short +1	-15	-48
behind short -1	11
behind short -2	-49	-34
behind short -3	-32	24
behind short -4		-18
behind short here-after		29
behind short here-before	66	37
behind square -2	-37
behind tall +1	-22
behind tall -1	-55
behind tall -2	26
behind tall -3	35
behind tall -4	27
behind tall here-after	-37
behind tall here-before	27
behind term +1	-19	-23
behind term -1		-10
behind term -2	18
behind term -3	-24	-11
behind term -4	-23	-27
behind term here-after		27
behind term here-before	37	35
behind thick +1	-25
behind thick -1	24
behind thick -2	46
behind thick here-before	-40
behind through +1		-11
behind through -1		9
behind through -2		-36
behind through -3		-16
behind through -4		-20
behind through here-before		42
behind time -1	-15
behind time -2		-19
behind time -3	-22	-23
behind time -4		21
behind time here-after		8
behind time here-before		-16
behind to +1	-35	-14
behind to -1	23	25
behind to -2	7	-56
behind to -3	-14	16
behind to -4	-6	-28
behind to here-after	-15	-27
behind to here-before	30	80
behind toward -1	-26
behind toward -2	66
behind toward here-after	-13
behind toward here-before	29
behind under +1	-18	15
behind under -1	-15	23
behind under -2	-29
behind under -4		-31
behind under here-after		14
behind under here-before	63	-32
behind up +1		9
behind up -1	17	-47
behind up -2	42	-24
behind up -3		-11
behind up -4	-31	-19
behind up here-after	-17
behind up here-before	-22	68
behind wide +1	-37
behind wide -1	-17
behind wide -3	-21
behind wide -4	31
behind wide here-before	46
behind with +1	-14	-27
behind with -1	9	-13
behind with -2	-13
behind with -3	39
behind with -4	-37	-15
behind with here-after	-15
behind with here-before	20	37
behind word +1	-19	-12
behind word -2	7	11
behind word -3		-13
behind word -4	-22	-17
behind word here-after		12
behind word here-before	35	10
behind-verb			10
between 	29	19
between @	41
between about	-34
between and	-79	-29
between are		58
between at	34
between be		10
between by	-33
between by about	-20
between come	44	61
between come out	23
between come up	11
between cut	25
between every	49
between for	-15
between for about	-32
between get		27
between get a		26
between has		37
between has a		13
between have		41
between have a		35
between hold	9
between in	54
between is	42	20
between it		135
between just		14
between keep		19
between measure	35
between of	52
between off	86
between on	-35	-52
between one		-32
between only	70	-7
between out	-30
between read	18
between run	53
between sag	15
between say	-27
between set	46
between sit	42
between still		37
between that		69
between the		-42
between to	43
between up	20
between were		28
between with a		75
carried	45
carried -1 none	18
carried -1 own	30
carried -1 person	66
carried -1 pointer	50
carried -1 tells	70
carried -2 none	41
carried -2 own	26
carried -2 pointer	67
carried -2 tells	98
carried -3 none	34
carried -3 own	9
carried -3 pointer	44
carried -4 none	72
carried -4 own	49
carried -4 pointer	61
carried here-before none	27
carried here-before own	28
carried here-before person	21
carried here-before pointer	44
counted angle		-11	-26
counted area	27
counted bare		22	27
counted count	42
counted current	-31	-27	-7
counted gauge		-13	-27
counted length	-12	-9	-32
counted pack			23
counted percent	-9	12	-7
counted power	-42	-16
counted pressure	-13	-39	-27
counted slope	-10
counted time		-6
counted voltage	49	-32
counted volume	-13		-32
counted weight	-8	9
does add material			78
does add word			-17
does ask fixture			19
does ask material			-33
does ask part			34
does ask surface			-62
does ask verbish			-10
does ask word			8
does be defect			8
does be finish			-48
does be fixture			40
does be part			-11
does be tells			-29
does be tool			9
does be verbish			-7
does be word			-6
does bend word			78
does blow part			53
does blow word			-49
does bring area			10
does bring defect			-17
does bring material			-24
does bring part			-20
does bring surface			-49
does bring verbish			23
does bring word			43
does buy material			85
does buy word			-7
does call area			-14
does call defect			-38
does call fixture			-20
does call material			39
does call part			14
does call surface			6
does call word			-14
does can material			-23
does change defect			-24
does change part			30
does change surface			-56
does change verbish			41
does change word			-7
does check defect			17
does check material			15
does check word			-27
does clean area			10
does clean fixture			8
does clean material			-11
does clean part			14
does clean surface			-17
does clean word			23
does close area			20
does close defect			-27
does close material			-26
does close surface			58
does close word			-18
does come area			13
does come defect			-27
does come fixture			-43
does come material			-9
does come part			63
does come surface			-7
does come verbish			52
does come word			7
does cut area			-22
does cut defect			18
does cut finish			-37
does cut fixture			43
does cut material			21
does cut part			-45
does cut size			-22
does cut surface			9
does cut tells			58
does cut verbish			-24
does cut word			-18
does dig defect			6
does dig material			13
does dig part			42
does dig surface			-56
does dig word			34
does do area			-12
does do defect			-16
does do fixture			116
does do material			-28
does do part			22
does do surface			-21
does do verbish			-29
does do word			-28
does drill defect			27
does drill fixture			-66
does drill material			13
does drill part			42
does drill word			-43
does dry defect			-20
does dry fixture			111
does dry material			-102
does dry surface			7
does dry word			-50
does file part			63
does file word			-10
does fill area			-41
does fill defect			31
does fill fixture			-9
does fill material			-33
does fill part			-42
does fill size			50
does fill surface			77
does fill verbish			38
does fill word			-70
does find area			-15
does find material			-78
does find word			58
does finish word			-62
does fix defect			44
does fix material			-36
does fix word			-39
does flip defect			20
does flip part			51
does flip surface			-74
does float word			60
does flush part			-20
does flush word			22
does fre fixture			30
does get area			20
does get defect			47
does get finish			-63
does get material			-15
does get part			61
does get size			-26
does get surface			-14
does get tells			-25
does get tool			11
does get verbish			-27
does get word			-27
does give area			-12
does give defect			-13
does give material			43
does give surface			-73
does give word			-17
does glue area			-17
does glue finish			-10
does glue material			14
does glue surface			-42
does glue verbish			30
does glue word			-9
does go area			25
does go defect			-7
does go finish			-35
does go fixture			20
does go material			52
does go part			8
does go surface			-27
does go tool			-28
does go verbish			-63
does go word			-8
does grab word			-60
does grind material			48
does grind surface			10
does grind word			-49
does grout material			7
does hang area			-10
does hang defect			-37
does hang fixture			29
does hang material			8
does hang part			75
does hang surface			-19
does hang verbish			-29
does hang word			-32
does has material			79
does have area			-28
does have defect			19
does have finish			-8
does have fixture			-13
does have material			-10
does have part			76
does have surface			20
does have tool			27
does have verbish			-30
does have word			-43
does hit material			-52
does hit surface			60
does hit word			-38
does i'll material			-69
does keep word			-37
does knock surface			-65
does knock word			-64
does lay defect			23
does lay fixture			42
does lay material			-17
does lay word			24
does leave area			-55
does leave defect			-32
does leave fixture			-25
does leave material			8
does leave part			-23
does leave size			13
does leave surface			60
does leave tool			-26
does leave verbish			8
does leave word			11
does let fixture			114
does let material			11
does let surface			-27
does let verbish			-15
does let word			-16
does like word			-47
does look area			48
does look defect			-42
does look fixture			9
does look material			-34
does look part			31
does look surface			37
does look word			-45
does make area			-19
does make defect			35
does make fixture			-22
does make material			-31
does make part			-51
does make surface			13
does make verbish			-16
does make word			38
does measure material			-37
does measure word			-24
does move defect			-30
does move fixture			11
does move material			-25
does move part			35
does move surface			-31
does move word			6
does need area			17
does need defect			-33
does need fixture			10
does need material			11
does need part			48
does need surface			-12
does need verbish			-28
does need word			-10
does open area			18
does open defect			41
does open fixture			37
does open material			-6
does open part			-11
does open surface			12
does open word			-51
does order defect			-14
does order fixture			-17
does order material			-21
does order part			64
does order surface			7
does order verbish			61
does order word			-23
does pack area			-36
does pack defect			-57
does pack material			14
does pack part			-53
does pack surface			15
does pack verbish			38
does pack word			27
does paint material			19
does paint surface			-34
does paint verbish			-31
does paint word			-6
does patch area			62
does patch defect			65
does patch material			73
does patch part			-119
does patch surface			-23
does patch verbish			-46
does patch word			8
does pick area			10
does pick word			32
does plane defect			-13
does plane fixture			53
does plane material			57
does plane surface			-25
does plane word			-58
does plug defect			-20
does plug surface			-43
does plug word			49
does prime area			-44
does prime surface			-14
does prime word			-71
does pull area			-7
does pull defect			-9
does pull fixture			-33
does pull part			44
does pull surface			-17
does pull verbish			22
does push word			-56
does put area			-17
does put defect			-28
does put finish			-29
does put material			18
does put part			78
does put size			70
does put surface			-27
does put tells			-16
does put verbish			-21
does put word			-46
does read part			-9
does read word			30
does redo defect			-36
does redo material			58
does redo surface			-60
does rehang material			8
does rehang surface			10
does rehang word			-32
does replace area			-55
does replace defect			-10
does replace fixture			-30
does replace part			38
does replace surface			22
does reset defect			-27
does reset material			62
does reset part			12
does reset surface			-90
does reset word			23
does rip area			31
does rip defect			36
does rip material			-8
does run area			-51
does run defect			49
does run fixture			70
does run material			-22
does run part			53
does run surface			-33
does run tool			30
does run verbish			-40
does run word			-56
does sand defect			-12
does sand fixture			80
does sand material			-27
does sand part			-7
does sand surface			19
does sand verbish			13
does sand word			-37
does say area			8
does say fixture			54
does say material			-12
does say part			65
does say surface			21
does say tells			-27
does say verbish			-60
does say word			-28
does scrape area			-48
does scrape defect			-34
does scrape fixture			19
does scrape material			72
does scrape surface			-14
does scrape word			-30
does screw defect			-20
does screw fixture			37
does screw material			63
does screw surface			-57
does screw word			-61
does scribe fixture			-18
does scribe surface			-37
does scribe word			-54
does seal area			29
does seal defect			-16
does seal part			11
does seal surface			52
does seal word			-56
does see area			-15
does see defect			-17
does see fixture			-45
does see part			-23
does see surface			69
does see word			16
does send defect			48
does send fixture			-9
does send material			-26
does send surface			-57
does send word			28
does set defect			-28
does set finish			-12
does set fixture			29
does set material			39
does set part			-78
does set surface			28
does set verbish			-23
does set word			28
does shim defect			-39
does shim fixture			73
does shim material			-19
does shim part			25
does shim surface			-17
does shim word			17
does shut area			-8
does shut part			79
does sister area			-61
does sister defect			-22
does sister material			139
does sister word			-35
does sit material			52
does sit word			-42
does skim surface			48
does skim word			-28
does snake word			37
does snug defect			-19
does snug material			59
does snug part			-11
does snug word			21
does splice defect			-25
does splice material			42
does splice word			19
does start area			80
does stick defect			-10
does stick material			-18
does stick part			20
does stick word			17
does straighten defect			45
does straighten word			73
does swap area			13
does swap defect			-31
does swap finish			-37
does swap fixture			-58
does swap material			24
does swap part			68
does swap size			-23
does swap surface			-58
does swap verbish			36
does take area			-6
does take defect			-34
does take finish			17
does take fixture			35
does take part			-24
does take size			-51
does take surface			-32
does take tells			-14
does take verbish			-26
does take word			51
does tape area			-10
does tape defect			33
does tape fixture			-56
does tape material			-27
does tape part			-37
does tape surface			11
does tape word			30
does tell material			-114
does tell surface			26
does tell verbish			76
does tell word			13
does think word			43
does tighten defect			-36
does tighten material			6
does touch defect			57
does touch material			-33
does touch word			37
does trim area			-17
does trim defect			-30
does trim fixture			40
does trim material			28
does trim part			36
does trim surface			10
does trim word			-34
does turn area			-57
does turn defect			-30
does turn material			30
does turn part			55
does turn word			-14
does use verbish			-48
does use word			-14
does wait material			7
does walk material			-47
does walk surface			40
does want area			-17
does want defect			-40
does want finish			-24
does want material			15
does want part			-20
does want surface			8
does want verbish			20
does want word			-12
does wash material			59
far after 1	-17	25
far after 13+	-16	-18
far after 2	-12
far after 3-4	-9
far after 5-7	-11	-8
far after 8-12	-17
far before 0	30	20	-17
far before 1	15	18	-18
far before 13+	-19	-24
far before 2	27	28	-11
far before 3-4	14	16
far before 5-7	14
far before 8-12		-6	10
figure-between	-18	7
flawed	14	-9	43
frame copula +1	-18	-7
frame copula -2	-10	-6	-7
frame copula -3		-9	8
frame copula -4	-11	-17	-10
frame copula finish			-51
frame copula fixture			29
frame copula here-after	-9
frame copula here-before	33	27	16
frame copula material			28
frame copula part			40
frame copula size			-28
frame copula surface			17
frame copula tells			-59
frame copula tool			-42
frame copula verbish			-12
frame copula word			-37
frame copula work			-22
frame imperative +1	-26
frame imperative -1	14	18
frame imperative -2		9	16
frame imperative -3		-42	14
frame imperative -4	-26	-43	-28
frame imperative fixture			32
frame imperative here-after	8	9
frame imperative here-before	33	37
frame imperative material			10
frame imperative part			15
frame imperative surface			-9
frame imperative tells			-16
frame imperative verbish			-26
frame imperative word			-13
frame imperative work			-10
frame modal +1	-29	15
frame modal -1	32	-8
frame modal -2	13	10	18
frame modal -3	-26	-14
frame modal -4		-40
frame modal area			-6
frame modal defect			-19
frame modal finish			-22
frame modal here-after	-30	13
frame modal here-before	12	7	-30
frame modal part			40
frame modal size			10
frame modal surface			19
frame modal tells			-42
frame modal tool			-23
frame modal verbish			-25
frame none +1	-23	-22
frame none -1	11		19
frame none -3	-6	-10	-6
frame none -4	-16
frame none area			27
frame none defect			-15
frame none finish			17
frame none fixture			16
frame none here-after		9
frame none here-before	34	28	-50
frame none material			-7
frame none part			13
frame none size			-18
frame none surface			12
frame none tells			-9
frame none tool			-8
frame none verbish			-36
frame none word			-8
frame owed +1	-21	-16
frame owed -1	14	-45	17
frame owed -2		-46	17
frame owed -3	-16	-12
frame owed -4	-16		-27
frame owed area			10
frame owed defect			-25
frame owed finish			-47
frame owed fixture			24
frame owed here-after	-15	45
frame owed here-before	45	54	-23
frame owed material			18
frame owed part			10
frame owed surface			12
frame owed tells			-64
frame owed tool			-14
frame owed verbish			14
frame owed word			-18
frame past +1	-23	-14
frame past -1	7		36
frame past -2	7
frame past -3	-18		-23
frame past -4	-22	-15	-28
frame past defect			-12
frame past fixture			17
frame past here-after	-9	17
frame past here-before	47	15	-9
frame past material			12
frame past part			30
frame past surface			-7
frame past tells			14
frame past tool			-14
frame past verbish			-13
frame past word			-16
frame past work			-33
frame present +1	-19	-14
frame present -1		17
frame present -2		-8	14
frame present -3	11		-9
frame present -4	-10	-13	-7
frame present area			-11
frame present defect			-20
frame present fixture			31
frame present here-after	-14
frame present here-before	19	21	8
frame present material			12
frame present part			9
frame present size			17
frame present surface			14
frame present tells			-16
frame present word			-23
heading	-14
heading +1	-18	-15
heading -1	-17		-16
heading -2	-10	8
heading -3	13	29
heading -4	-11		8
heading here-after		-30
heading here-before	-35	-16	-37
join	-13	-12	-12
join +1			-7
join +1 area			-6
join +1 defect			-8
join +1 fixture			-15
join +1 part	-6
join +1 size	7
join +1 tells			-14
join +1 tool	-6		-8
join +1 verbish			-8
join +1 work			33
join -1	-7
join -1 area			13
join -1 defect			-8
join -1 finish			-11
join -1 fixture	7		10
join -1 part	7
join -1 tells	-10		-9
join -1 word	-9
join -1 work	-6		-10
join -2	-7		-8
join -2 area			-10
join -2 finish	-9
join -2 size			-9
join -2 tool	-6		-8
join -2 work	-9		-7
join -3	-12		-11
join -3 defect	-9
join -3 finish	-6		-6
join -3 part			-6
join -3 size	-9		-9
join -3 surface			-9
join -3 tells			-11
join -3 verbish	-8
join -3 word	-7
join -3 work	-7		-14
join area	-8
join area+area	-7	-18	-16
join area+material			8
join area+size			7
join area+surface		9
join area+tells	-8	35	22
join area+tool		-8	-7
join area+word		-6
join defect	-9		-7
join defect+area		-7
join defect+size	-8
join defect+tells	8
join defect+tool			-7
join finish	-8	-6	-8
join finish+area		-6
join finish+finish		-7	-10
join finish+size	-7
join finish+surface	-12
join finish+tells	-14
join finish+tool	-15
join fixture	8
join fixture+area		18	8
join fixture+defect		-10
join fixture+finish		25
join fixture+fixture	14	19	15
join fixture+size	18
join fixture+tells	9	19
join fixture+tool		-23	-16
join fixture+verbish			-8
join fixture+work	-9		-14
join heading	-8
join leads about quantity across	-22
join leads after	-8
join leads along	17	-14
join leads around			9
join leads at			7
join leads at quantity	15
join leads at quantity word		9
join leads at term term		-20	-8
join leads at term verb		11
join leads at verb word		21
join leads at word		9
join leads at word verb		-11
join leads at word word		-10	9
join leads before word verb	18		35
join leads behind	9
join leads behind term verb			31
join leads behind word word	15	25	8
join leads between	12
join leads by		8	18
join leads by quantity		-6	-7
join leads by term	12	-9
join leads by term quantity		11
join leads by term word			8
join leads down		-12
join leads down word		-33
join leads for		12
join leads for term		-11
join leads for word		20
join leads for word term	-9	-15	-10
join leads from	-14
join leads from term term		-7
join leads from term to	-18
join leads in number		-7
join leads in quantity			6
join leads in term number		25	6
join leads in term of		-9
join leads in term quantity	-7
join leads in term term			19
join leads in term word		-7
join leads in verb behind		6
join leads in word	10	-13
join leads in word quantity	14
join leads in word term		8	16
join leads in word verb		-12
join leads in word word		-9	-10
join leads into	-8		-9
join leads mark number		21
join leads mark number term		-8
join leads mark word	7
join leads near		19	8
join leads next to		12
join leads number	-6	20	11
join leads number in		18
join leads number of		-26
join leads number verb			13
join leads number word word		17
join leads of		7
join leads of quantity	-26	-6	7
join leads of quantity word	-8
join leads of term	-21		-9
join leads of term quantity		33
join leads of term term	-9	8
join leads of term word	-8	-9
join leads of verb	-13	8
join leads of verb word	-11	-8
join leads of word		-7
join leads of word quantity	-7
join leads of word term		-21	-8
join leads of word verb		-15
join leads of word word		12	13
join leads off		14
join leads off term word		9	34
join leads on quantity		11	8
join leads on quantity word			7
join leads on term term	-10	-9	7
join leads on term verb		8
join leads on term word	-6		11
join leads on verb verb	-8	-10
join leads on verb word			10
join leads on word		24	-7
join leads on word of		21
join leads on word quantity			-8
join leads on word word	-18		-9
join leads out of		-11
join leads out on		-9
join leads over		7
join leads over term verb	18
join leads over to	9	-9
join leads over word word		-10
join leads quantity at		-12	-9
join leads quantity before	-16
join leads quantity by	-6
join leads quantity by quantity		-6	7
join leads quantity from		-8
join leads quantity in		-13
join leads quantity mark		-6
join leads quantity of		-16
join leads quantity of quantity			-11
join leads quantity of word	-12
join leads quantity off		-8
join leads quantity on		-10
join leads quantity term word		11	8
join leads quantity verb word	-10	-21	-17
join leads quantity word term		-11
join leads quantity word verb		30
join leads quantity word word		-12	-7
join leads term at	8
join leads term by	-18	-16
join leads term of		-15
join leads term on	-16	21	-7
join leads term on term		-16
join leads term over	-9	-7
join leads term quantity at		-9
join leads term term term		-14
join leads term term verb		-8
join leads term term word	-10	-10
join leads term verb			6
join leads term verb by		9
join leads term verb in		16
join leads term verb quantity		9
join leads term verb term		6
join leads term verb verb		-7	-11
join leads term verb word	15
join leads term with	11
join leads term word		-8	-8
join leads term word in		-6
join leads term word verb	11	-13
join leads term word word			-6
join leads time	8	31	11
join leads time before word		-9
join leads time for	-23
join leads time quantity word	-10
join leads time with		-20
join leads time word		-18
join leads time word verb		-12
join leads time word word		15
join leads to		-7	-6
join leads to term word		-9
join leads to verb	9	-7	-13
join leads to verb down		13
join leads to verb quantity		-26	-13
join leads to verb word			-6
join leads toward	6
join leads under		7	9
join leads under term word	10
join leads under word word		-28
join leads up		-7	-12
join leads up in		7	8
join leads up to	-12	-9	-7
join leads verb about quantity		-11	14
join leads verb behind		11
join leads verb by		-9
join leads verb by quantity		-10
join leads verb for	-9	-10
join leads verb from	6
join leads verb from term			8
join leads verb in		8
join leads verb of		6	-9
join leads verb off		21
join leads verb off in		-16
join leads verb on		-6	12
join leads verb on quantity	8		-11
join leads verb on term		-13	-8
join leads verb out		-16
join leads verb out quantity			-14
join leads verb out term		35
join leads verb over		-9
join leads verb quantity			7
join leads verb quantity in	22	-10
join leads verb quantity of		-19	-15
join leads verb quantity off			10
join leads verb quantity on	6		-14
join leads verb quantity over		-8
join leads verb quantity term		6
join leads verb quantity verb		13
join leads verb quantity word	14
join leads verb term in		-14	-7
join leads verb term on		-8	10
join leads verb term term	-6		-7
join leads verb term verb		25	7
join leads verb time		14
join leads verb to	9		19
join leads verb to verb		-19
join leads verb under		18	-9
join leads verb up quantity		18
join leads verb verb at	-11	-8	26
join leads verb verb by	12
join leads verb verb down		-12
join leads verb verb from			11
join leads verb verb in		18	32
join leads verb verb on			8
join leads verb verb out			-10
join leads verb verb quantity			-6
join leads verb verb term		-15	22
join leads verb verb to		8
join leads verb verb verb		-9	-7
join leads verb verb with			-7
join leads verb verb word		-11
join leads verb with		7	10
join leads verb with verb		-7	-7
join leads verb word			-7
join leads verb word in	7		-10
join leads verb word number		9
join leads verb word of			9
join leads verb word on		14
join leads verb word out			11
join leads verb word quantity	7	11
join leads verb word term	-9		-25
join leads verb word verb		-14
join leads verb word with		-7
join leads with quantity		-12	-9
join leads with term word		-14
join leads with word term		-6
join leads with word word		-9
join leads word at		-12	-26
join leads word at quantity			-15
join leads word down		-7
join leads word for		-13
join leads word in at	12
join leads word in term		-7
join leads word in verb	-8
join leads word in word		14	-7
join leads word mark		-13
join leads word number	14
join leads word number word		-7	-10
join leads word off	-11	15
join leads word on quantity			-9
join leads word on word			13
join leads word out of			-7
join leads word quantity	-7		-14
join leads word quantity by	-6	-10
join leads word quantity of		-14
join leads word quantity off	-6	-16
join leads word quantity on		-15
join leads word quantity word	6	-10
join leads word term	8		-7
join leads word term at	8	21
join leads word term by	-9
join leads word term for		15
join leads word term in		-6
join leads word term of		-11
join leads word term on		-18	-22
join leads word term term		-6
join leads word term verb	-12
join leads word term word		-8
join leads word time		-14
join leads word to	-9
join leads word to verb	8
join leads word up word	-9	-17
join leads word verb	-7	-7
join leads word verb at		-18	-6
join leads word verb from	-7	8	-17
join leads word verb in			-10
join leads word verb off		-28
join leads word verb term		-7
join leads word verb up			-9
join leads word verb with		-17
join leads word verb word		-9
join leads word with	-12	-12	-9
join leads word word by		9
join leads word word in	-6
join leads word word on		-11	-9
join leads word word quantity	-9	-8	-12
join leads word word term	-7	-11	-8
join leads word word to	-8	-11	13
join leads word word verb		-10	-12
join leads word word word			-8
join links 	12
join links about			-6
join links about quantity across	-26
join links about quantity by	-30
join links above	-13		23
join links across	18		31
join links along	27	-26
join links around	9	25	31
join links at	10	13	9
join links at quantity	46
join links at quantity off	26
join links at quantity term	-16
join links at quantity to	-38
join links at quantity word	-18	-9	13
join links at term	15
join links at term quantity		-8
join links at term term	29	-20	-27
join links at term verb	25	8	30
join links at term word	53		33
join links at verb word		23
join links at word	45	7
join links at word term		-16
join links at word verb	18	-16
join links at word word		-15	22
join links before word verb	9		11
join links behind	11	-8	23
join links behind term verb		11	40
join links behind term word		-8
join links behind word	20	-11
join links behind word number		-8
join links behind word word	19	27	11
join links below word		-15
join links between	8	-10
join links by		18	35
join links by term	58	10	11
join links by term term		14	-9
join links by term verb			12
join links by term word	70		11
join links down	28		-10
join links down in		-8	-16
join links down word	22	-11
join links for		29	24
join links for quantity	-10
join links for term		-11
join links for term term	-12
join links for term word			-9
join links for word		18
join links for word term		-16	-11
join links from	-9
join links from term to	-30	8	-13
join links in	10	14	19
join links in about quantity	-17
join links in quantity		14	27
join links in term	13	12	18
join links in term number	40	26	31
join links in term of	-6	-9
join links in term quantity	15
join links in term term			58
join links in term verb	25	10	15
join links in term word	27
join links in verb behind		14
join links in word	18	-16
join links in word quantity	14	-7
join links in word term		25	18
join links in word verb	-10	-12	8
join links in word word	-20	-15	-21
join links into			-12
join links mark	16		-12
join links mark number		84
join links mark number term		-20
join links mark quantity	17
join links mark word	11
join links mark word term			-13
join links near		46	51
join links near word	7
join links next to		38
join links number	16		24
join links number in		18
join links number of		-16
join links number of word		7
join links number verb		7	41
join links number word word		15
join links of	19	20	19
join links of quantity	-16		27
join links of quantity at	46
join links of quantity word	-16	-9
join links of term			-7
join links of term quantity	-11	71
join links of term term	-19	12
join links of term verb	-15		59
join links of term word	-39	-13	-19
join links of verb	-14	8
join links of verb word		-11	21
join links of word verb		-15	-8
join links of word word	43	-7	29
join links off		17	27
join links off in		-9
join links off term word		-9
join links on		11	16
join links on in		26
join links on quantity		14	32
join links on quantity word	-22		34
join links on term	-27	-8	-19
join links on term term	-12	-14	15
join links on term verb	38		-26
join links on term word	-18	10
join links on verb word	34	-8	31
join links on word	-8	23	-17
join links on word quantity			-16
join links on word term	17		10
join links on word verb	8		8
join links on word word	-16		-19
join links out of	-10	-13	13
join links out of word		-10
join links out on		-15
join links over		16
join links over term verb	15
join links over term word		-8	43
join links over to	7	-11
join links over word word		-8
join links quantity	7
join links quantity above	29
join links quantity at	35	-26	-21
join links quantity at term	21
join links quantity before	-35
join links quantity behind word	7
join links quantity by quantity	-16		-23
join links quantity from	-27	-34	-8
join links quantity from term	-14	-22
join links quantity in	-16		-8
join links quantity mark		-15
join links quantity mark quantity	-28
join links quantity of	7		9
join links quantity of quantity			-11
join links quantity of term	15
join links quantity of word	-33	6
join links quantity off	-6	-8
join links quantity on	29	-21
join links quantity on word	20
join links quantity term	13
join links quantity term to	-15
join links quantity term word	-7	9
join links quantity to	-11	-27
join links quantity toward		-12
join links quantity verb		-9	-13
join links quantity verb quantity	-13
join links quantity verb to	-19
join links quantity verb word	-43	-17	-22
join links quantity with	11
join links quantity word	13	7
join links quantity word at	-20	-7
join links quantity word of	34
join links quantity word on	24
join links quantity word quantity	-16	-13	-36
join links quantity word term		-21
join links quantity word to	-13
join links quantity word verb		-12
join links quantity word word	7	-15	-9
join links term			6
join links term at	29	-14	13
join links term at word		54
join links term by	-8	-32	-6
join links term from		-10
join links term in	-7		8
join links term of		-26
join links term of term	-8
join links term on	-24		-21
join links term on term		-18
join links term on verb			-8
join links term over	-17	-10
join links term quantity at	-22
join links term term	-11	-7
join links term term term		-10
join links term term verb	-13	-9
join links term term word	-26	-13
join links term verb	-8
join links term verb in		7
join links term verb term			-19
join links term verb verb		-7	-25
join links term verb word	8
join links term with	17	-17
join links term word	8	-12	-17
join links term word in		37
join links term word on		-9
join links term word term			9
join links term word verb	44	-12	-11
join links term word word		-10	-20
join links through	7		15
join links time	13	17
join links time before word		-11
join links time for	-29
join links time quantity word	-42
join links time with		-7
join links time word		-19	19
join links time word verb		-12
join links time word word		11
join links to term word		-19
join links to verb			-12
join links to verb down		17
join links to verb quantity		-17	-7
join links toward	14
join links under		21	46
join links under term verb			15
join links under term word	52		12
join links under word word	13	-45	13
join links up	-6		-11
join links up in	-7	17	23
join links up on	13	-8
join links up quantity	-16
join links up to	-12	-6
join links verb	9	-7
join links verb about quantity	28		-15
join links verb along	-27
join links verb at	-10	-10	30
join links verb at quantity	15	-21
join links verb behind	-18		-13
join links verb by		-29	90
join links verb by quantity		-11
join links verb for	-23	-14	22
join links verb from		-13
join links verb from quantity	-27
join links verb from term		43	27
join links verb in	-7
join links verb in at	-27	-9
join links verb in term	-8	-8	9
join links verb mark		18	10
join links verb of	-8	15	-8
join links verb off		10
join links verb off in		-26	11
join links verb on	7	6	24
join links verb on quantity			-13
join links verb on term		-16	-20
join links verb on verb		-23
join links verb on word		-10	-11
join links verb out	19	-17	-17
join links verb out of	32
join links verb out quantity	18	-23	-40
join links verb out term		28
join links verb over		-11
join links verb quantity	21		26
join links verb quantity at	-13	-20	-22
join links verb quantity from	61	-15
join links verb quantity in	45	-9	-7
join links verb quantity mark		-13
join links verb quantity of		-8	-27
join links verb quantity off	51	13	32
join links verb quantity on	31	23	-29
join links verb quantity over	-44	-33
join links verb quantity term	-45	-16	-19
join links verb quantity to	-7
join links verb quantity up	-10
join links verb quantity verb		-26
join links verb quantity word	32		-7
join links verb term	21		25
join links verb term at		-21
join links verb term by	-12		-16
join links verb term from	-10	-8
join links verb term in		-23	-22
join links verb term of			14
join links verb term on			52
join links verb term quantity		-16
join links verb term term	-24		-15
join links verb term to	11	-12
join links verb term word	-8	-18	-19
join links verb time			-7
join links verb to	7	40	15
join links verb to quantity	-12
join links verb to verb		-9
join links verb under	6		-35
join links verb up quantity	-6	16	-21
join links verb up with	-6	6	13
join links verb up word			36
join links verb verb			27
join links verb verb at	-20	-20	25
join links verb verb by		-19	37
join links verb verb down	-51	-35	-38
join links verb verb from	7	-10
join links verb verb in		28	35
join links verb verb into		-34
join links verb verb on	-28	-21	13
join links verb verb out	-27	-9	-22
join links verb verb quantity			-25
join links verb verb term		-13	49
join links verb verb to		8
join links verb verb verb	9	-16
join links verb verb with		-14	-23
join links verb verb word	20	-12
join links verb with		-13	13
join links verb with verb		-24	10
join links verb word	-14	-8	-13
join links verb word down		-10
join links verb word in	32	-8	-50
join links verb word number		38
join links verb word of			14
join links verb word on		11	22
join links verb word quantity	28	36	21
join links verb word term	13	-13	-34
join links verb word to		-10
join links verb word up			-10
join links verb word verb	-28	-30	-16
join links verb word with	-6	-9	-10
join links verb word word	-16
join links with	-7
join links with quantity	27	-15	-15
join links with term quantity			19
join links with term word		-10	15
join links with verb word		23
join links with word term		-17
join links with word word		-8
join links word		-6
join links word about quantity	-6		-13
join links word at		-11	-15
join links word at quantity	34	-6	-23
join links word by			13
join links word for		-19
join links word from		9
join links word in			-14
join links word in at	31	-27
join links word in term		-8
join links word in verb	8
join links word in word		19	-16
join links word mark		-21
join links word number	31	-7
join links word number word		-8	-16
join links word of		23	26
join links word off	-11	19
join links word on		18
join links word on quantity			-14
join links word on term	-9		8
join links word on word		8	32
join links word out of			-8
join links word quantity		-8	-14
join links word quantity at	24	-7
join links word quantity by	-23	-13
join links word quantity from	62
join links word quantity in	-8
join links word quantity of	-10	-19
join links word quantity off	-27	-20
join links word quantity on	-20	-17
join links word quantity term	-27	-8	12
join links word quantity verb	19		-18
join links word quantity word	9	-15
join links word term	21		-14
join links word term at	19	36	-13
join links word term by	-15	-7	-20
join links word term for		7
join links word term in	-6	-13	18
join links word term of		-11
join links word term on		-11
join links word term term		-9	-7
join links word term verb	-23	-8	-10
join links word term with			-8
join links word term word		-20	-8
join links word time		-19
join links word time word		23
join links word to	-42
join links word to verb	38
join links word up word	-25	-35
join links word verb			12
join links word verb about	-11		-25
join links word verb at		-27	8
join links word verb behind		32	-22
join links word verb by		-7
join links word verb down	-7	-8	11
join links word verb from	-7		-32
join links word verb in		-11	-35
join links word verb off		8
join links word verb on	17	6
join links word verb out		-10
join links word verb over		22
join links word verb quantity	35	-8	-17
join links word verb term	-17		17
join links word verb to	11	-17	6
join links word verb up	-11
join links word verb verb	-16
join links word verb with		-14	-18
join links word verb word	-9		-21
join links word with	-13	-10	-11
join links word word		-10
join links word word at			10
join links word word by	9	10
join links word word in			-22
join links word word mark	-22
join links word word of	-7	12
join links word word on		-10	-16
join links word word quantity		-17	-18
join links word word term	-18	-10	-10
join links word word to	-14	-15	16
join links word word verb		-14	-13
join material+area			10
join material+defect	15	-8
join material+finish	7
join material+fixture		16	17
join material+material			12
join material+size	6	-10	-6
join material+tells		-12	-12
join material+tool		-7
join material+verbish		-6	-11
join material+work			-12
join part+area			-7
join part+defect		-9	-11
join part+finish		-13
join part+fixture		17	16
join part+size	9	8
join part+surface		6
join part+tells		-27	-20
join part+tool			7
join part+verbish	7
join part+work		-21	-16
join same-after	15	-7	12
join same-after area			11
join same-after defect	19	-11
join same-after fixture	18	10	34
join same-after material	11
join same-after part	10		22
join same-after size	12
join same-after surface	10	7
join same-after tells	-7		16
join same-after tool		-8
join same-after verbish	9		-7
join same-after word		-7
join same-after work			-16
join same-before defect		-7
join same-before size	9
join same-before tells			-6
join same-before work	6	-17
join size 1			11
join size 2	-9	-18	-25
join size 3		-11	-20
join size+area	7		10
join size+defect	-10
join size+finish	-17		-10
join size+fixture	10
join size+part	9		6
join size+size	6	-12	22
join size+surface		6
join size+tells	9	12
join size+tool	-9		20
join size+verbish		-12
join size+word	-6
join sizes 1+1		6	19
join sizes 1+2	-11		-8
join sizes 2+1		-13	-19
join sizes 2+2	-10	-12	-7
join sizes 2+3	-6	-11	-17
join sizes 3+1		-8	-10
join sizes 3+2	-8	-8	-14
join sizes 3+3	-9	-21	-22
join surface	-7
join surface+area		17	15
join surface+defect		-7
join surface+finish	-7	-7	9
join surface+part		9	8
join surface+surface		10	-7
join surface+tells	-7
join surface+tool		7
join surface+verbish			-7
join surface+work		-10	41
join tells			-13
join tells+finish	-12
join tells+fixture	9	16
join tells+part		-15	-8
join tells+tells	-6		-17
join tells+tool			-7
join tells+verbish		-6
join tool	-6	-7	-9
join tool+defect	-8	-8	-7
join tool+finish	-11
join tool+fixture		-21	-9
join tool+size			14
join tool+surface	-9
join tool+tells	-6
join tool+tool			-10
join tool+word		-6
join verbish	-9	-10	-16
join verbish+area		-7	6
join verbish+defect	-8		-7
join verbish+finish	-9		-8
join verbish+fixture			-8
join verbish+material			-7
join verbish+size	-12	-9
join verbish+tells	-7	-13	-6
join verbish+tool	-8		-9
join verbish+verbish		-13	-6
join verbish+word		-7	-7
join word	-7		-11
join word+defect	-6
join word+finish	6		-7
join word+tells	-8
join word+word	-8	-7	-8
join word+work			-8
join work	-11	-9	-14
join work+area		16
join work+fixture	-7		-7
join work+part	8	-15
join work+word		-8
kind +1 area	-16	-16
kind +1 defect	-13	-11
kind +1 finish	-11	-17
kind +1 fixture	-20	17
kind +1 material	-16	-7
kind +1 part	-26
kind +1 size	-14
kind +1 surface	-17	-12
kind +1 tells	-10	-16
kind +1 tool	-10	-16
kind +1 verbish	-12	-23
kind +1 word	-11	-11
kind +1 work	-10	-11
kind -1 area	-27	16
kind -1 defect	-19	-30	-12
kind -1 finish	-20	-23	-26
kind -1 fixture	27	45	41
kind -1 material	38	9	17
kind -1 part	23	7	60
kind -1 size	21	20	21
kind -1 tells	-7	-58
kind -1 tool	-29	-37	8
kind -1 verbish		-20
kind -1 word	-13	-12	-13
kind -1 work		-30
kind -2 area	-21
kind -2 defect	-11	-18	-8
kind -2 finish	-43	-17	11
kind -2 fixture	38	13	28
kind -2 material		-7	16
kind -2 part		13	11
kind -2 size		-11
kind -2 surface	-9	21
kind -2 tells	-46	10	-42
kind -2 tool	16	-38	-56
kind -2 verbish	-17	-9	-17
kind -2 word	-6	-12
kind -2 work	-56	-27	-31
kind -3 area	8		12
kind -3 defect		-9	-19
kind -3 finish		-13	-21
kind -3 fixture	7	17
kind -3 material	-7
kind -3 part	7	-9	16
kind -3 size	-51	-7	-37
kind -3 surface		-7	20
kind -3 tells		-13	-42
kind -3 tool	-25	8	-16
kind -3 verbish		-16	-16
kind -3 word	-8	-10	-16
kind -3 work	28	-10	-8
kind -4 area		-9
kind -4 defect		-7	-10
kind -4 finish			-19
kind -4 fixture		-8
kind -4 material	-12
kind -4 part	-13	-9	-19
kind -4 size	-17	-17	-9
kind -4 surface	-16		9
kind -4 tells	-16	-6	-29
kind -4 verbish	-11	-7	-9
kind -4 word			-15
kind -4 work	-10	-16	-22
kind area	-13
kind defect	-10	-23	-10
kind finish	-15	-14	-13
kind fixture	15	23	21
kind here-after area	-9	33
kind here-after defect	-6	-22
kind here-after finish	10	-7
kind here-after fixture	-19	17
kind here-after material		26
kind here-after part	-6	35
kind here-after size		15
kind here-after surface		13
kind here-after tells	-8	-6
kind here-after tool	-6	9
kind here-after verbish	-10	17
kind here-before area	-19	-33	-41
kind here-before defect		22	29
kind here-before finish		7
kind here-before fixture	21	23	20
kind here-before material	44	44
kind here-before part	66	42	14
kind here-before size	34		19
kind here-before surface	35	12	7
kind here-before tells	-27		-31
kind here-before tool	-25	36	-23
kind here-before verbish	19		-43
kind here-before word		-11	-17
kind here-before work	49
kind material	16	16	12
kind part	16	22	25
kind size	9
kind tells	-17	-16	-29
kind tool	-13	-11	-13
kind verbish		-9	-17
kind word	-14	-15	-18
kind work		-16	-28
lead a -2	56	-8
lead a -3	-47	-12
lead a -4	-42	-25
lead a here-after	23	20
lead a here-before		46
lead about -3	-20
lead about -4	-12
lead about here-before	45
lead all here-after		-12
lead area -2		16
lead area -3	-18	-26
lead area -4		-18
lead area here-after		-13
lead area here-before	22	29
lead at -1	-18
lead at -2	-17
lead at -3	-20
lead at -4	10
lead at here-after	-17
lead at here-before	58
lead by -1	-7
lead by -3	-14
lead by -4	14
lead by here-after	-13
lead by here-before	29
lead defect -1	-10
lead defect -3	-24
lead defect -4	-19
lead defect here-before	37
lead down -1	-18
lead down -2	-23
lead down -3	30
lead down -4	22
lead down here-after	-18
lead down here-before	33
lead every -1	-45
lead every -2	-48
lead every -3	-28
lead every here-before	54
lead finish here-before		-67
lead fixture -1	-29	6
lead fixture -2	-24
lead fixture -3	-26	8
lead fixture -4	-11	-8
lead fixture here-after	-13	-22
lead fixture here-before	60	20
lead for -1	23
lead for -2	-11
lead for -3	-12
lead for -4	-14
lead for here-before	19
lead from -1	30
lead from -2	-33
lead from -4	-40
lead from here-after	-17
lead from here-before	35
lead in -1	16
lead in -2	9
lead in -3	7
lead in -4	-35
lead in here-after	-10	20
lead in here-before	8	-40
lead mark -1	33
lead mark -2	-22
lead mark -3	-35
lead mark -4	-21
lead mark here-after	6
lead mark here-before	23
lead material -1	20	13
lead material -2	-13	-18
lead material -3	-10
lead material -4	-16	-17
lead material here-after		-18
lead material here-before	12	20
lead no here-after		7
lead number -1		48
lead number -2		17
lead number -4		-59
lead number here-after		-18
lead number here-before		36
lead of -1	41
lead of -2	-29
lead of -4	-8
lead of here-after	-11	11
lead of here-before	10	-44
lead off -1	-11
lead off here-after	-6
lead off here-before	56
lead on -1	20	-37
lead on -2		35
lead on -3	22	-14
lead on -4		-11
lead on here-after		11
lead on here-before	15
lead out -1	20
lead out -2	-55
lead out -3	22
lead out -4	-22
lead out here-before	53
lead over -1	-11
lead over -2	-25
lead over -3	68
lead over -4	6
lead over here-after	-8
lead over here-before	-9
lead part -1	-20
lead part -3	-27	-8
lead part -4		-14
lead part here-after		-16
lead part here-before	39	27
lead past -2	16
lead quantity -1		15
lead quantity -2	-22
lead quantity -3	-9
lead quantity -4	36	12
lead quantity here-after		-22
lead quantity here-before		42
lead role -1		-38
lead role -2		-52
lead role -3		-63
lead role -4		8
lead role here-after		118
lead role here-before		-44
lead size -1	-35	-53
lead size -2	-7
lead size -3	18	-21
lead size -4		-16
lead size here-after	-10	18
lead size here-before	37	10
lead surface -1	-11	24
lead surface -2	7
lead surface -3	-27
lead surface -4	-21	-26
lead surface here-after	-11	-29
lead surface here-before	38	19
lead tells -1	-56
lead tells -2		-31
lead tells -3	65	21
lead tells -4		-34
lead tells here-after		-29
lead tells here-before	-27
lead that -1		-14
lead that -2		-19
lead that -3		-42
lead that here-after		22
lead that here-before		53
lead the -1	24	-37
lead the -2	-8	-28
lead the -3	-21	-30
lead the -4	12	-43
lead the here-after		71
lead the here-before		-54
lead time -2	46
lead time -3	-42
lead time here-after	-29
lead time here-before	-37
lead to -1	15	28
lead to -2		34
lead to -4	-8
lead to here-after	-8	19
lead to here-before	30	-14
lead tool -1		-34
lead tool -2		-20
lead tool -3		-18
lead tool -4		10
lead tool here-after		-8
lead tool here-before		48
lead under -3	37
lead under here-before	-31
lead up -1	32
lead up -3	-22
lead up -4	-35
lead verbish -1	13	19
lead verbish -2		-16
lead verbish -3	-9
lead verbish -4	-27	-19
lead verbish here-after		-20
lead verbish here-before	37	34
lead with -1	-21	30
lead with -2	-30	28
lead with -3	33
lead with -4		-40
lead with here-after		-58
lead with here-before	48	51
lead within -1	-49
lead within -2	63
lead within here-before	-12
lead word -1	8
lead word -3		-8
lead word -4	-16	-9
lead word here-after	-9	6
lead word here-before	29	26
lemma arrive object		-36
lemma arrive subject		30
lemma be object	-15	-18
lemma be subject	33	20
lemma bend object		22
lemma bend subject		53
lemma bind subject		31
lemma break object		54
lemma break subject		35
lemma bring object		101
lemma bubble subject		49
lemma buzz object		-35
lemma buzz subject		43
lemma call object	6
lemma come object	-18
lemma come subject	71	-23
lemma come subject-late		-7
lemma crack object		18
lemma crack subject		37
lemma cup subject		-66
lemma cut object	-11
lemma do object	55	18
lemma drill object	10
lemma drill subject	55
lemma drip object		-32
lemma drip subject		69
lemma drop object	-53	47
lemma dump object		-51
lemma dump subject		29
lemma find object	59	66
lemma finish object	9
lemma get object	-12	-16
lemma get subject	11	45
lemma get subject-late		-27
lemma go object		-10
lemma go subject	33
lemma go subject-late		-96
lemma hang object	23	6
lemma hang subject	33	-50
lemma have object	-21	-11
lemma have subject	49	19
lemma have subject-late	-48	17
lemma hit object	-10	-44
lemma hit subject		92
lemma hold object	40
lemma hold subject	74
lemma hum subject		-22
lemma keep subject		52
lemma land object		-24
lemma land subject		-30
lemma leak object		-12
lemma leak subject		37
lemma leave object	22	78
lemma leave subject	-8	45
lemma lift subject		-25
lemma make object	-32	15
lemma measure object	-21
lemma measure subject	36
lemma measure subject-late	-9
lemma miss object		18
lemma move object	-18	29
lemma need object	24	54
lemma open object	26
lemma pull object	26	18
lemma pull subject		46
lemma pull subject-late		-73
lemma rattle subject		-24
lemma read object	-19
lemma read subject		7
lemma read subject-late	33
lemma rip subject	76
lemma rub subject		47
lemma run object		-15
lemma run subject	-56	87
lemma sag object	-31
lemma sag subject	50	22
lemma say object	-12	116
lemma say subject	-28	-40
lemma scrape object		-13
lemma scratch object		-9
lemma see object		55
lemma send object		-27
lemma set object	43	-14
lemma show object		-25
lemma show subject		-16
lemma sit object	29	-52
lemma sit subject	49	9
lemma snap subject		56
lemma squeak subject		35
lemma stain object		-7
lemma stand object	9	37
lemma stand subject	-21
lemma stick object	-31	-28
lemma stick subject	58	45
lemma strip subject		-18
lemma swap object		54
lemma take object	21	40
lemma tear subject		45
lemma tell object	9
lemma test object	-44
lemma test subject	24
lemma think object		11
lemma trip object		-19
lemma trip subject		34
lemma turn object		-74
lemma turn subject		-17
lemma use object		85
lemma walk object		82
lemma want object	38	54
lemma want subject	-35	33
lemma weep subject		48
lemma wobble subject		47
not-carried	-40
not-carried +1 none	-16
not-carried +1 own	-10
not-carried +1 person	8
not-carried +1 pointer	-19
not-carried +1 tells	-20
not-carried -1 none	-8
not-carried -1 own	-29
not-carried -1 person	-21
not-carried -1 pointer	-14
not-carried -1 tells	-35
not-carried -2 none	-37
not-carried -2 own	-22
not-carried -2 person	-38
not-carried -2 pointer	-35
not-carried -2 tells	-30
not-carried -3 none	-24
not-carried -3 own	-11
not-carried -3 person	-26
not-carried -3 pointer	-17
not-carried -3 tells	-28
not-carried -4 none	-16
not-carried -4 own	-21
not-carried -4 person	11
not-carried -4 pointer	-35
not-carried -4 tells	-18
not-carried here-after own	-12
not-carried here-after person	-13
not-carried here-before none	40
not-carried here-before own	25
not-carried here-before pointer	26
not-carried here-before tells	-20
not-told		-19
not-told +1		-17
not-told -1		26
not-told -4		-9
not-told here-after		-24
not-told here-before		11
number many many			72
number many one			-58
number none many			10
opens-with +1	-37
opens-with -1	51	-19
opens-with -2		-10
opens-with -3	-9	-24
opens-with -4	-39	-19
opens-with here-after		43
part +1 bare	-15	-8
part +1 object	-12	-13
part +1 opens	-22	-13
part +1 subject	-25	7
part +1 subject-late		-13
part -1 bare	-18	-13	-16
part -1 object	-7
part -1 opens	18	8	17
part -1 subject	26	7	35
part -1 subject-late		8	27
part -2 bare	-20		-13
part -2 object	-13	-10
part -2 opens	8
part -2 subject	13		28
part -2 subject-late		11	11
part -3 bare	-21
part -3 object	-10	-14	-13
part -3 opens	21	12	17
part -3 subject	-9	-8	-9
part -3 subject-late	11	-15	11
part -4 object	-16	-18	-17
part -4 opens	-6		8
part -4 subject	-9	-7	-7
part -4 subject-late	10	-11	-24
part bare	-19	-12	-14
part bare area	-17		-12
part bare defect	-21	-17	-29
part bare finish	-19		13
part bare fixture			-26
part bare material	-6
part bare part			18
part bare size	-12	17	19
part bare surface	-19	-14	-12
part bare tells	-21	34	-26
part bare tool	35	-11	-18
part bare verbish			34
part bare word	-14	-15	-13
part bare work	-8	10
part here-after bare		-14
part here-after object	-9
part here-after opens		44
part here-after subject		67
part here-after subject-late	-32	10
part here-before bare	-8	11	-53
part here-before object	15	14
part here-before opens	42	29	-38
part here-before subject	40	26	6
part here-before subject-late			-37
part object	-22	-19	-19
part object area	-20		-11
part object defect	-13	-22	-9
part object finish	-16	-16	-21
part object fixture	-11	14	16
part object material	7
part object part	11	19	22
part object size			14
part object surface			-6
part object tells	-24	-16	-20
part object tool	-18	-24
part object verbish	-11	-16	-24
part object word	-16	-15	-19
part object work	-14	-14	-11
part opens	18	16	13
part opens area	7	13	45
part opens defect	30	-20	21
part opens finish	-15	-36	-22
part opens fixture	28	43	66
part opens material	25	15
part opens part	24	23	23
part opens size			-41
part opens surface		22	37
part opens tells	-10		-55
part opens tool	11	-9	-54
part opens verbish	9		-8
part opens word			-17
part opens work	12		-26
part subject	19	17	20
part subject area	-11	12	10
part subject defect	14	-23	-43
part subject finish	50	50	11
part subject fixture	32	24	19
part subject material	15	20	25
part subject part	11	16	16
part subject size	21		-12
part subject surface	16	8	22
part subject tells		-31	-33
part subject tool		63	-12
part subject verbish	7		-28
part subject word			7
part subject work		-32	-13
part subject-late area	-12	-23	-17
part subject-late defect	-22	7	23
part subject-late finish	-15	7	14
part subject-late fixture	10
part subject-late material	22	23	33
part subject-late part			34
part subject-late size	57	12	-36
part subject-late surface		19	-8
part subject-late tells		-15	10
part subject-late tool	-34	-40	-28
part subject-late verbish	-10	13	27
part subject-late word		-11	-22
points both -1			-19
points both -2			-27
points both -3			30
points both -4			11
points both bare			-8
points both here-before			17
points both object			-60
points both subject			48
points em -3			22
points em -4			-29
points em bare			-32
points em object			14
points it -2			10
points it -3			-7
points it -4			-9
points it bare			-17
points it object			-21
points it subject			26
points it subject-late			6
points none -1			20
points none -3			-14
points none -4			-15
points none bare			-12
points none here-before			-15
points none object			-25
points none opens			18
points none subject			20
points one -1			32
points one -2			-29
points one -4			-8
points one bare			-15
points one object			-15
points one opens			8
points one subject			17
points that -1			30
points that -2			8
points that -3			17
points that -4			-46
points that bare			-37
points that here-before			-21
points that object			-9
points that opens			14
points that subject			23
points that subject-late			-20
points them -1			33
points them -4			-51
points them bare			-10
points them object			40
points them opens			-10
points them subject			-25
points them subject-late			-28
points they -1			29
points they -2			6
points they -3			-26
points they -4			-15
points they bare			37
points they here-before			-20
points they object			-21
points they opens			41
points they subject			-40
points they subject-late			51
points this -1			-31
points this -2			33
points this -3			-11
points this -4			10
points this object			-66
points this opens			33
points this subject			9
points those -1			-7
points those -2			31
points those -3			16
points those -4			-32
points those bare			-6
points those here-before			-26
points those object			-9
points those opens			50
points those subject			-22
points those subject-late			15
prep about	37	27	13
prep above	-28
prep across	-19	-20	-7
prep after	-40	-46	-30
prep against	-47	-59
prep along	-43		-28
prep around	-31	-34
prep at	-26	-25	-31
prep before	-11
prep behind	-27	-29	-42
prep below	24	-18	-20
prep beside		-17	-33
prep between	18		-46
prep by	-38	-36	-54
prep down	6	22	14
prep for	-29		-23
prep from	-32	-34	-51
prep here-after about		-21
prep here-after above		15
prep here-after after		-29
prep here-after along		23
prep here-after around	-18	-37
prep here-after at		-23
prep here-after before	-9
prep here-after behind	12	-35
prep here-after below		-75
prep here-after between	16	28
prep here-after by	-17	-30
prep here-after down		43
prep here-after for	-15
prep here-after from		-50
prep here-after in	-9	9
prep here-after inside		-23
prep here-after into		-29
prep here-after near		-40
prep here-after off		13
prep here-after on	-9	14
prep here-after over	-17	-13
prep here-after past		-38
prep here-after through		72
prep here-after to		-37
prep here-after toward	-13	-67
prep here-after up		49
prep here-after with	-14	-52
prep here-after without		-46
prep here-before along	-40	-49
prep here-before at	-64	-47	-9
prep here-before behind	-31	-38
prep here-before by	-82	-76	-46
prep here-before for	-28	-24
prep here-before from	-102	-77	9
prep here-before in	-35	-29	-16
prep here-before of	-16		10
prep here-before off		-40
prep here-before on	-23	-23	38
prep here-before over	-51	-45	-55
prep here-before to	-34	-74	-27
prep here-before toward	-32
prep here-before under	-47	-28
prep here-before up		-14
prep here-before with	39	-20
prep in	-18	-14	-24
prep inside	-31	59	88
prep into	-16	-30	-28
prep near	-42	-49	-58
prep next	15	40
prep of	-16		-10
prep off	-11
prep on	-14	-12	-8
prep onto		-19
prep other about	39	51	16
prep other above	-42	-7	10
prep other across	-12	-14	-7
prep other after	-43	-23	-30
prep other along	-39	8	-26
prep other around	-38	-18
prep other at	-25	-19	-31
prep other before	-8
prep other behind	-32	-16	-42
prep other below	49		-20
prep other beside			-33
prep other between	18	-33	-44
prep other by	-27	-25	-53
prep other down			15
prep other for	-28		-23
prep other from	-30	-22	-55
prep other in	-16	-16	-25
prep other inside	-18	71	88
prep other into	-9		-26
prep other near	-31	-23	-58
prep other of	-16		-12
prep other off	-18
prep other on	-11	-16	-11
prep other out	-20	-12
prep other over	-12		-26
prep other past		17
prep other through	19	19	64
prep other to	-28	-29	-35
prep other toward	-19	-38	-48
prep other under	-25	-32	-37
prep other up	44		27
prep other with	-19	-18	-36
prep other without	-24	-36	17
prep out	-29	-7
prep over	-20	-13	-34
prep per	-6
prep through	29	64	64
prep to	-24	-33	-34
prep toward	-32	-61	-48
prep towards		-73
prep under	-28	-23	-31
prep up	38	12	27
prep with	-15	-23	-37
prep without	-25	-56	17
rank after 0	-10
rank after 1	-11
rank after 2	-10	-7
rank after 3	-14	-11
rank after 4	9	-11
rank before 0	15	16	-15
rank before 1	13	9
rank before 2		-7	7
rank before 3		-9	8
rank before 4	-21	-19
says copula		-7
says imperative	-7
says modal			-17
says owed		-7
sentences -1	-41	-46	-53
sentences -1 bare	-28	-29	-39
sentences -1 object	-22	-20	-23
sentences -1 opens	-27	-29	-43
sentences -1 subject	-13	-25	-6
sentences -1 subject-late	-21	-11	-25
sentences -2	-28	-27	-53
sentences -2 bare	-16	-17	-30
sentences -2 object	-8	-18	-38
sentences -2 opens	-17	-14	-21
sentences -2 subject	-23	-12	-34
sentences -2 subject-late			-11
sentences 1	-22	-31
sentences 1 bare	-15	-30
sentences 1 object		-20
sentences 1 opens	-24	-27
sentences 1 subject	-24	-27
sentences 1 subject-late	-19	-23
size 1	-17	-33	-37
size 2	17	27	40
size 3	17	42	43
stands-off-after	-10
subject none +1	-24	-19
subject none -3		-7
subject none -4	-15	-9
subject none here-after		13
subject none here-before	37	29
subject own +1	-12	-8
subject own -1	-11
subject own -2	-15
subject own -3	-10	-10
subject own -4	-13	-14
subject own here-after	-8	-9
subject own here-before	40	27
subject person -1	14	-11
subject person -2	-12	-28
subject person -3	-57
subject person -4	44
subject person here-after	-19	10
subject person here-before	14	12
subject pointer +1	-29	-15
subject pointer -1	31
subject pointer -2	7
subject pointer -3		-14
subject pointer -4	-20	-21
subject pointer here-after	-15	30
subject pointer here-before	22
subject tells +1	-21	16
subject tells -1	36	-36
subject tells -2	36	-38
subject tells -3	9	15
subject tells -4	-22	-25
subject tells here-before	-31	37
told -1		72
told -2		38
told -3		67
told -4		53
told area		-14
told defect		-26
told finish		50
told fixture		22
told here-before		13
told material		28
told part		34
told size		-45
told surface		14
told tells		49
told tool		10
told verbish		11
touches-before	30	20
unit angle defect	-8
unit area fixture	-48
unit area material	38
unit area part	-45
unit area surface	57
unit area verbish	-31
unit area word	-26
unit current defect	-25
unit current fixture	25
unit current material	-28
unit current part	33
unit current surface	-52
unit current verbish	15
unit current word	-8
unit flow area	-31
unit flow defect	-27
unit flow fixture	42
unit flow material	-27
unit flow part	19
unit flow word	13
unit length area	-12
unit length defect	-8
unit length finish	-19
unit length fixture	17
unit length material	19
unit length part	12
unit length size	15
unit length tells	-12
unit length tool	-33
unit length word	-17
unit length work	-25
unit none area	-8
unit none defect	-11	-23
unit none finish		-14
unit none fixture	16	22
unit none material	11	16
unit none part	24	22
unit none size	-8
unit none tells	-12	-16
unit none tool	11	-10
unit none verbish	-14	-9
unit none word	-14	-15
unit none work	42	-16
unit other defect	-32
unit other material	15
unit other part	-41
unit other surface	-14
unit other word	49
unit percent area	-16
unit percent defect	-16
unit percent finish	-9
unit percent fixture	-30
unit percent material	7
unit percent part	-13
unit percent size	15
unit percent surface	60
unit percent tells	-63
unit percent tool	44
unit percent verbish	-23
unit pressure defect	-21
unit pressure fixture	-7
unit pressure material	-12
unit pressure part	-61
unit pressure size	49
unit pressure surface	32
unit pressure verbish	-9
unit slope area	-35
unit slope fixture	14
unit slope material	13
unit slope part	20
unit slope size	-11
unit slope surface	17
unit slope word	-19
unit temperature defect	-17
unit temperature fixture	-24
unit temperature material	-10
unit temperature size	10
unit temperature surface	49
unit temperature verbish	-6
unit torque part	26
unit torque word	-8
unit voltage defect	-26
unit voltage material	-39
unit voltage part	55
unit voltage surface	-19
unit voltage verbish	-16
unit voltage word	32
unit volume defect	-24
unit volume material	-43
unit volume part	18
unit volume surface	52
unit volume word	-44
unit weight area	-8
unit weight defect	-12
unit weight material	-34
unit weight part	59
unit weight verbish	-7
unit weight word	-12
use buy	17	13	7
use have	9	-10	19
use measure		-9
use move	-6		-12
use need			9
use other			10
use return	21		-35
use say	-9	9	-14
use see	11	-7	-7
use use		-13	-39
where +1	-21	-10
where -1	8		12
where -2			6
where -3		-9	-7
where -4	-15	-13	-15
where here-after	-7	6
where here-before	35	24
whole after about defect		-11
whole after about word		-9
whole after along defect		-13
whole after at area		-37
whole after at defect		12
whole after at fixture	30
whole after at material	49	-30
whole after at part	88	56
whole after at size		-13
whole after at surface	6
whole after at verbish	9	-13
whole after at word	41	-14
whole after behind defect		-22
whole after behind material		31
whole after behind word		-29
whole after below material	76
whole after by area		-38
whole after by defect	-35	-12
whole after by fixture	14	-22
whole after by material	18	-20
whole after by part	-46	-10
whole after by word	-13	12
whole after centers size	49
whole after deep word	-25
whole after down defect		-7
whole after down word	-19
whole after end defect		-12
whole after for defect		-12
whole after from defect		-7
whole after from fixture	15
whole after from part		40
whole after from surface		-20
whole after from verbish		-15
whole after from word	19	43
whole after in area		-15
whole after in defect		-9
whole after in fixture		-10
whole after in material		7
whole after in part		-14
whole after in surface	-42	-18
whole after in tool		-7
whole after in verbish		-19
whole after in word	-35	-21
whole after inside word		-13
whole after long word	-17
whole after mark defect		-7
whole after mark part		40
whole after mark word		33
whole after number defect		-9
whole after number word		-17
whole after of defect		-22
whole after of material	76
whole after of size	71
whole after of surface	42
whole after of verbish	-26
whole after of word	9	12
whole after off material		-28
whole after off part	84	7
whole after off surface	9
whole after off verbish		51
whole after off word	37	11
whole after on area		20
whole after on defect		-18
whole after on fixture		61
whole after on part		-15
whole after on size	-46
whole after on surface	81	-20
whole after on tells	-17
whole after on verbish		10
whole after on word	22	10
whole after out defect		-10
whole after out material		-9
whole after out surface		11
whole after out verbish		-6
whole after out word		-6
whole after over material	-17
whole after over size	-22
whole after quantity area		41
whole after quantity defect		-15
whole after quantity fixture		-9
whole after quantity material		-17
whole after quantity part		-7
whole after quantity surface		11
whole after quantity tells		-18
whole after quantity verbish		-23
whole after quantity word		-19
whole after short surface	-26
whole after short word	-36
whole after term area		53
whole after term defect	9	-34
whole after term finish	-9	-20
whole after term fixture	53	29
whole after term material	-6
whole after term part	37	-7
whole after term size	49	-18
whole after term surface	9	-30
whole after term tells		16
whole after term verbish	24
whole after term word	-8	-16
whole after through defect		-11
whole after to defect		-19
whole after to material		24
whole after to part	-45
whole after to surface	21
whole after to word		-28
whole after under defect		-27
whole after under fixture		-11
whole after under word	-53
whole after up defect		-12
whole after up word	-29
whole after wide word	-24
whole after with defect		-22
whole after with material	16
whole after with part		7
whole after with word		-14
whole after word area	-38	21
whole after word defect	-38	-21
whole after word finish		-15
whole after word fixture	-67	15
whole after word part	-49
whole after word size	52	-12
whole after word surface	13	11
whole after word tells	-15
whole after word tool	-14	-31
whole after word verbish	-16	-12
whole after word word		-9
whole article a	9	-13	8
whole article none	-13	-13	-22
whole article other	-10	-6	-10
whole article the		6	13
whole behind about -1		27
whole behind about -2		-36
whole behind about here-after		-26
whole behind above +1	-19
whole behind above -2	-24
whole behind above here-after	33
whole behind above here-before	6
whole behind across +1	-32
whole behind across -1	33
whole behind across -2	-33
whole behind across -3	-10
whole behind across -4	-25
whole behind across here-after	-56
whole behind across here-before	68
whole behind after +1	-21
whole behind after -1	-19
whole behind after -3	-10
whole behind after -4	32
whole behind after here-before	45
whole behind along here-after		21
whole behind along here-before		-9
whole behind apart here-before	32
whole behind at +1	-14
whole behind at -1	-30	-14
whole behind at -2	-15	-17
whole behind at -3	-20	-12
whole behind at -4	-12	-8
whole behind at here-after	53
whole behind at here-before		11
whole behind before +1	-19
whole behind behind +1	-8
whole behind behind -1		-21
whole behind behind -2	-9
whole behind behind -4	-6	-11
whole behind behind here-after	62	47
whole behind behind here-before	-60	-36
whole behind below +1	-16
whole behind below -1	-16
whole behind below -2	-6
whole behind below -3	-18
whole behind below -4	-7
whole behind below here-after	53
whole behind below here-before	16
whole behind between here-after	32
whole behind by +1	-12	6
whole behind by -1	7	-30
whole behind by -2	9	-28
whole behind by -3	-20	-12
whole behind by -4	13	-12
whole behind by here-after	-15	-27
whole behind by here-before	32	-32
whole behind centers -1	-13
whole behind centers -4	-11
whole behind centers here-after	43
whole behind deep +1	-19
whole behind deep -1	-12
whole behind deep -2	-30
whole behind deep -3	-30
whole behind deep -4	-31
whole behind deep here-after	-71
whole behind down +1	-19	-16
whole behind down -1	57	-35
whole behind down -2	-35
whole behind down -3	-7	-12
whole behind down here-after	16	12
whole behind down here-before		12
whole behind end +1	-26	-6
whole behind end -1		-9
whole behind end -2		-10
whole behind end -3	-15
whole behind end -4	-18	-12
whole behind end here-after		-12
whole behind end here-before	24	15
whole behind for +1	-17
whole behind for -1	32	68
whole behind for -2	-38	32
whole behind for -3	-11	-11
whole behind for -4	-10
whole behind for here-after	-24	-19
whole behind for here-before		28
whole behind from +1	-12	-17
whole behind from -1		-7
whole behind from -2		-15
whole behind from -3	-8
whole behind from -4	-10	37
whole behind from here-after	35	26
whole behind high +1	-32
whole behind high -3	-29
whole behind high -4	-31
whole behind high here-after	-14
whole behind high here-before	13
whole behind in +1	-19
whole behind in -1	24	20
whole behind in -2		-19
whole behind in -3	-27	-15
whole behind in -4	-20	-14
whole behind in here-after	14	-26
whole behind in here-before	30	19
whole behind inside here-after		-15
whole behind inside here-before		-18
whole behind into here-after		-31
whole behind long +1	-21
whole behind long -1	32
whole behind long -2	-14
whole behind long -3	-8
whole behind long -4	-25
whole behind long here-after	-75
whole behind long here-before	21
whole behind low +1	-22
whole behind low -1	-54
whole behind low -3	-6
whole behind low -4	38
whole behind low here-before	-15
whole behind mark +1	-14
whole behind mark -1	15	26
whole behind mark -2	-33
whole behind mark -4	-16	-7
whole behind mark here-after	-43	58
whole behind mark here-before	28	31
whole behind near here-after		-30
whole behind near here-before		31
whole behind number +1		-8
whole behind number -1		68
whole behind number -2		-30
whole behind number -3		-7
whole behind number -4		-8
whole behind number here-after		7
whole behind of +1	-18
whole behind of -1	-30
whole behind of -2	-11
whole behind of -3	-22
whole behind of -4	11
whole behind of here-after	66
whole behind off +1	-15	-16
whole behind off -1	-16	-40
whole behind off -2	18	-10
whole behind off -3		-14
whole behind off -4	-17
whole behind off here-after	25	37
whole behind off here-before	11	-17
whole behind on +1	-6	-12
whole behind on -1	-20	-21
whole behind on -2	-32
whole behind on -3	8	-15
whole behind on here-before	-21
whole behind out +1	-12
whole behind out -1	26	-45
whole behind out -2	-10
whole behind out -3	22	-12
whole behind out here-after		-24
whole behind out here-before	13	-9
whole behind over +1	-20
whole behind over -1	10	-19
whole behind over -2	-29	-15
whole behind over -3	-11
whole behind over -4	-18
whole behind over here-after	-34	41
whole behind over here-before	41	-17
whole behind past +1	-11
whole behind past -1	-32
whole behind past here-after	35
whole behind quantity +1	-19
whole behind quantity -1	-25	-27
whole behind quantity -2	-39	17
whole behind quantity -3		-15
whole behind quantity here-after	-14	-13
whole behind short +1	-14	-14
whole behind short -1	-27	13
whole behind short -2	-17
whole behind short -3	-11
whole behind short -4	-12
whole behind short here-after		-12
whole behind short here-before	10
whole behind square -2	-10
whole behind tall +1	-21
whole behind tall -1	26
whole behind tall -2	20
whole behind tall here-after	-45
whole behind tall here-before	-38
whole behind term +1	-10	-15
whole behind term -2	-6	-11
whole behind term -3	-9	-7
whole behind term -4	-14	-7
whole behind term here-after	30	-11
whole behind term here-before	7
whole behind thick +1	-35
whole behind thick -2	-12
whole behind thick here-before	-23
whole behind through -2		-12
whole behind through here-before		-20
whole behind time -1	-39
whole behind time -3	-10
whole behind to +1	-24	-9
whole behind to -1	-13
whole behind to -3	-10	-19
whole behind to -4	-12
whole behind to here-before	33	55
whole behind toward -1	-33
whole behind toward -2	15
whole behind toward here-after	-43
whole behind toward here-before	56
whole behind under +1	-24	12
whole behind under -1	56
whole behind under -2	-17
whole behind under here-after	-6
whole behind under here-before	40	-25
whole behind up +1	10	7
whole behind up -1	22	22
whole behind up -2	17
whole behind up -4	-22	-8
whole behind up here-after	33	-26
whole behind up here-before	-47
whole behind wide +1	-19
whole behind wide -1	-22
whole behind wide -2	-24
whole behind wide -3	22
whole behind wide -4	-14
whole behind wide here-before	23
whole behind with +1	-11
whole behind with -1	20	-36
whole behind with -2	-14
whole behind with -3	10	-21
whole behind with -4	-30
whole behind with here-after	-19	-35
whole behind with here-before	10
whole behind word +1	-18
whole behind word -3		-8
whole behind word -4	-18	-9
whole behind word here-after		-11
whole behind word here-before	25
whole behind-verb		-10
whole between 	16
whole between @	-12
whole between about	35
whole between and	-94	-16
whole between are	23	7
whole between at	15
whole between be	53
whole between by	25
whole between by about	24
whole between come		10
whole between come out	20
whole between cut	14
whole between every	28
whole between for	34
whole between for about	10
whole between get		20
whole between get a		-23
whole between has		30
whole between have		26
whole between have a		36
whole between hold	-9
whole between in	60
whole between is	33	12
whole between keep		-62
whole between measure	-26
whole between of	23
whole between off	28
whole between on	32	11
whole between only	7
whole between out	-29
whole between read	42
whole between run	42
whole between say	16
whole between set	18
whole between sit	-16
whole between still		-7
whole between that		17
whole between the		-52
whole between to	22
whole between up	45
whole between want	22
whole between were		-16
whole between with		-21
whole between with a		18
whole carried	20
whole carried -1 own	31
whole carried -1 person	32
whole carried -1 tells	31
whole carried -2 none	35
whole carried -2 own	24
whole carried -2 pointer	28
whole carried -2 tells	32
whole carried -3 pointer	12
whole carried -4 none	21
whole carried -4 own	38
whole carried here-before none	26
whole carried here-before person	16
whole carried here-before pointer	41
whole carried here-before tells	34
whole counted angle	37	-8	-19
whole counted count	29		36
whole counted current	-20	-7	14
whole counted gauge			-18
whole counted length	13		-16
whole counted pack			14
whole counted percent	36		9
whole counted power	-39
whole counted pressure		-15	-16
whole counted slope	-36
whole counted time	27	-34
whole counted volume		8	-33
whole counted weight		12
whole does add material			64
whole does add word			-18
whole does ask fixture			51
whole does ask part			32
whole does ask surface			-40
whole does ask verbish			-9
whole does ask word			41
whole does be area			29
whole does be defect			-22
whole does be finish			-37
whole does be fixture			24
whole does be material			-9
whole does be surface			25
whole does be tells			-29
whole does bend word			9
whole does blow word			-9
whole does bring area			-18
whole does bring defect			-45
whole does bring material			37
whole does bring part			49
whole does bring surface			-18
whole does bring tool			17
whole does bring verbish			42
whole does bring word			22
whole does buy material			74
whole does call defect			-34
whole does call material			46
whole does call part			20
whole does call surface			48
whole does call verbish			-25
whole does change area			-30
whole does change material			60
whole does change part			-38
whole does change surface			-10
whole does change verbish			6
whole does check defect			24
whole does check material			-33
whole does check word			-25
whole does clean area			-25
whole does clean fixture			-22
whole does clean material			-22
whole does clean part			-23
whole does clean surface			13
whole does clean word			-23
whole does close defect			-26
whole does close material			11
whole does close surface			34
whole does close word			-22
whole does come area			16
whole does come defect			-45
whole does come fixture			-15
whole does come surface			16
whole does come verbish			34
whole does come word			-26
whole does cut defect			16
whole does cut finish			-12
whole does cut fixture			35
whole does cut material			-20
whole does cut surface			-29
whole does cut tells			75
whole does cut verbish			-25
whole does cut word			-21
whole does dig defect			22
whole does dig material			12
whole does dig part			-19
whole does dig surface			-16
whole does do area			13
whole does do defect			56
whole does do fixture			24
whole does do material			-22
whole does do part			11
whole does do verbish			-11
whole does do word			-44
whole does drill defect			37
whole does drill fixture			15
whole does drill material			-15
whole does drill part			-15
whole does drill word			-18
whole does dry area			75
whole does dry defect			-22
whole does dry material			-52
whole does dry word			15
whole does file part			18
whole does file word			-11
whole does fill area			39
whole does fill defect			64
whole does fill fixture			-12
whole does fill material			-25
whole does fill part			-30
whole does fill surface			32
whole does fill verbish			-14
whole does fill word			-33
whole does find material			-29
whole does find word			45
whole does finish word			-18
whole does fix defect			8
whole does fix material			-40
whole does fix word			-17
whole does flip defect			-24
whole does flip part			23
whole does flip surface			-14
whole does flip word			-7
whole does flush word			-16
whole does fre fixture			-25
whole does fre part			27
whole does fre word			-21
whole does get area			-18
whole does get finish			-28
whole does get fixture			40
whole does get material			13
whole does get part			-16
whole does get size			-30
whole does get surface			23
whole does get tells			-27
whole does get tool			-26
whole does get verbish			-26
whole does give area			-13
whole does give defect			-37
whole does give material			12
whole does give surface			-36
whole does give word			-17
whole does glue area			-30
whole does glue defect			12
whole does glue fixture			-9
whole does glue material			-7
whole does glue surface			-21
whole does glue verbish			66
whole does glue word			-15
whole does go area			-11
whole does go defect			-30
whole does go finish			8
whole does go material			36
whole does go part			27
whole does go surface			23
whole does go tool			-17
whole does go verbish			-22
whole does go word			13
whole does grab word			-18
whole does grind defect			54
whole does grind surface			22
whole does grind word			-37
whole does grout material			-17
whole does hang area			-54
whole does hang defect			-7
whole does hang fixture			13
whole does hang material			-6
whole does hang part			-12
whole does hang surface			-9
whole does hang verbish			-9
whole does hang word			12
whole does has material			51
whole does have finish			-15
whole does have material			-22
whole does have part			29
whole does have surface			23
whole does have tool			-17
whole does have verbish			-44
whole does have word			-20
whole does hit defect			43
whole does hit material			-27
whole does hit surface			44
whole does hit word			-15
whole does i'll word			9
whole does keep material			-20
whole does keep word			-13
whole does knock surface			-31
whole does knock word			-43
whole does lay defect			26
whole does lay fixture			30
whole does lay material			-11
whole does lay word			-33
whole does leave area			-50
whole does leave defect			-37
whole does leave fixture			27
whole does leave material			63
whole does leave size			27
whole does leave tool			-17
whole does leave verbish			7
whole does leave word			-34
whole does let area			26
whole does let defect			-6
whole does let fixture			7
whole does let material			-11
whole does let surface			-44
whole does let verbish			-28
whole does let word			-50
whole does lift material			36
whole does like word			-37
whole does look area			35
whole does look defect			-12
whole does look fixture			-7
whole does look material			-30
whole does look part			28
whole does look word			32
whole does make area			12
whole does make defect			-9
whole does make fixture			-21
whole does make material			-33
whole does make part			-39
whole does make verbish			38
whole does make word			8
whole does measure material			-19
whole does measure word			-24
whole does move defect			-32
whole does move fixture			-17
whole does move material			-15
whole does move part			-26
whole does move word			26
whole does need area			19
whole does need fixture			76
whole does need material			7
whole does need part			47
whole does need size			-10
whole does need surface			-27
whole does need verbish			-19
whole does need word			-33
whole does open area			-12
whole does open defect			73
whole does open material			-21
whole does open part			14
whole does open surface			-29
whole does open word			-34
whole does order defect			-35
whole does order fixture			17
whole does order part			-10
whole does order surface			-30
whole does order verbish			20
whole does pack area			-39
whole does pack defect			-25
whole does pack material			31
whole does pack part			-7
whole does pack verbish			22
whole does pack word			-18
whole does paint material			19
whole does paint verbish			13
whole does paint word			40
whole does patch area			33
whole does patch defect			44
whole does patch material			19
whole does patch part			-67
whole does patch surface			7
whole does patch verbish			-21
whole does patch word			35
whole does pick area			-38
whole does pick word			42
whole does plane fixture			42
whole does plane surface			-11
whole does plane word			-21
whole does plug defect			-28
whole does plug word			-13
whole does prime area			-47
whole does prime material			-35
whole does prime surface			-20
whole does prime word			-41
whole does pull area			34
whole does pull defect			-21
whole does pull fixture			54
whole does pull material			-49
whole does pull part			-25
whole does pull surface			-12
whole does pull verbish			-8
whole does pull word			-18
whole does push word			-21
whole does put area			25
whole does put defect			-23
whole does put finish			-24
whole does put fixture			-14
whole does put part			9
whole does put size			23
whole does put surface			-25
whole does put tool			-8
whole does put verbish			-12
whole does put word			-29
whole does read part			-27
whole does read word			17
whole does redo defect			-28
whole does redo material			44
whole does redo surface			8
whole does redo word			-17
whole does rehang word			-19
whole does replace area			-54
whole does replace defect			-33
whole does replace fixture			-59
whole does replace part			-19
whole does replace surface			-15
whole does replace word			-34
whole does reset defect			-35
whole does reset material			-15
whole does reset part			-43
whole does reset surface			-30
whole does reset word			-14
whole does rip area			32
whole does rip defect			-19
whole does run area			-14
whole does run defect			10
whole does run fixture			26
whole does run material			-42
whole does run part			21
whole does run surface			-7
whole does run tool			-8
whole does run verbish			-14
whole does run word			-45
whole does sand defect			14
whole does sand fixture			30
whole does sand material			15
whole does sand part			-14
whole does sand surface			53
whole does sand word			-18
whole does say area			-13
whole does say defect			28
whole does say fixture			-23
whole does say material			-38
whole does say part			32
whole does say surface			-30
whole does say tells			-23
whole does say verbish			-26
whole does say word			-42
whole does scrape area			59
whole does scrape defect			-29
whole does scrape fixture			51
whole does scrape material			-36
whole does scrape surface			29
whole does scrape word			-37
whole does screw defect			-12
whole does screw fixture			-16
whole does screw material			36
whole does screw surface			-46
whole does screw word			-15
whole does scribe surface			70
whole does scribe word			-50
whole does seal area			8
whole does seal defect			-14
whole does seal material			21
whole does seal surface			23
whole does seal word			-10
whole does see area			-8
whole does see fixture			-20
whole does see material			6
whole does see part			-15
whole does see surface			37
whole does see verbish			-8
whole does see word			-20
whole does send defect			35
whole does send material			13
whole does send surface			-31
whole does send word			-29
whole does set defect			-23
whole does set fixture			-12
whole does set material			68
whole does set part			-25
whole does set surface			-11
whole does set word			7
whole does shim defect			-49
whole does shim fixture			-25
whole does shim material			12
whole does shim surface			-25
whole does shim word			25
whole does shut area			-13
whole does shut part			70
whole does sister area			-21
whole does sister defect			-8
whole does sister material			19
whole does sister word			-25
whole does skim surface			-17
whole does skim word			-32
whole does snake word			12
whole does snug defect			-15
whole does snug material			21
whole does snug part			-16
whole does splice defect			-8
whole does splice material			13
whole does start area			45
whole does stick material			-47
whole does stick part			-21
whole does stick word			28
whole does straighten defect			-13
whole does straighten word			-17
whole does strip word			-11
whole does swap area			-46
whole does swap defect			-24
whole does swap finish			-29
whole does swap size			-17
whole does swap surface			-41
whole does swap verbish			-22
whole does take area			19
whole does take defect			-42
whole does take finish			-15
whole does take fixture			15
whole does take material			-6
whole does take part			-7
whole does take size			-6
whole does take surface			-20
whole does take verbish			-17
whole does take word			30
whole does tape defect			10
whole does tape fixture			-17
whole does tape part			-35
whole does tape surface			11
whole does tape word			-24
whole does tell material			-62
whole does tell surface			-33
whole does tell word			34
whole does think word			-17
whole does tighten defect			-23
whole does tighten material			11
whole does touch defect			15
whole does touch material			-25
whole does touch word			29
whole does trim area			-27
whole does trim defect			-33
whole does trim fixture			26
whole does turn area			-47
whole does turn defect			-27
whole does turn material			-6
whole does turn word			7
whole does use material			46
whole does use verbish			-19
whole does use word			-15
whole does wait material			8
whole does walk material			-30
whole does walk surface			14
whole does want area			-48
whole does want defect			-45
whole does want finish			-15
whole does want fixture			43
whole does want material			9
whole does want part			-15
whole does want surface			13
whole does want word			24
whole does wash material			37
whole far after 0	38	-12
whole far after 13+	-20	-10
whole far after 2	13
whole far after 3-4	-18
whole far after 5-7	-20
whole far after 8-12	-20	7
whole far before 0	16		11
whole far before 1	22	6
whole far before 13+	-25	-11	-16
whole far before 2	23	11
whole far before 5-7	8	-8
whole figure-between		-9
whole flawed	-8	-7
whole frame copula +1	-19
whole frame copula -1			7
whole frame copula -2	-9	-9
whole frame copula -3	-13	-9	-9
whole frame copula -4	-15	-8	-16
whole frame copula area			24
whole frame copula defect			-14
whole frame copula finish			-6
whole frame copula fixture			19
whole frame copula here-after	18	-8
whole frame copula here-before	16		10
whole frame copula part			12
whole frame copula size			-7
whole frame copula surface			8
whole frame copula tells			-36
whole frame copula tool			-24
whole frame copula verbish			-13
whole frame copula word			-14
whole frame copula work			32
whole frame imperative +1	-27
whole frame imperative -1	53	39
whole frame imperative -2	7	26	10
whole frame imperative -3		-25	-9
whole frame imperative -4	-22	-23	-20
whole frame imperative area			10
whole frame imperative defect			-8
whole frame imperative finish			-12
whole frame imperative here-after	-26	-22
whole frame imperative here-before	17	19	21
whole frame imperative part			14
whole frame imperative size			25
whole frame imperative tells			25
whole frame imperative verbish			-26
whole frame imperative work			-10
whole frame modal +1	-18	9
whole frame modal -1	46
whole frame modal -2		14	8
whole frame modal -3	7	-18	-18
whole frame modal -4	-21	-18	-10
whole frame modal fixture			20
whole frame modal here-after	-9	9
whole frame modal here-before	22	12	46
whole frame modal material			12
whole frame modal part			-8
whole frame modal size			-9
whole frame modal tells			-30
whole frame modal tool			-24
whole frame modal word			-15
whole frame none +1	-22	-9
whole frame none -1			23
whole frame none -2			-13
whole frame none -3	-10
whole frame none -4	-17
whole frame none area			8
whole frame none defect			-21
whole frame none fixture			15
whole frame none here-after	15	-17
whole frame none here-before	17		-27
whole frame none material			10
whole frame none part			14
whole frame none size			11
whole frame none surface			9
whole frame none tells			-32
whole frame none tool			10
whole frame none verbish			-17
whole frame none word			-13
whole frame owed -1		-8	8
whole frame owed -2	-7	-27	21
whole frame owed -3		-12	9
whole frame owed -4	-8	-11	-21
whole frame owed area			31
whole frame owed defect			-22
whole frame owed finish			-28
whole frame owed fixture			20
whole frame owed here-after	7
whole frame owed here-before	19	37	-7
whole frame owed size			-16
whole frame owed surface			21
whole frame owed tells			-22
whole frame owed tool			-14
whole frame owed verbish			-11
whole frame owed word			6
whole frame past +1	-21	-11
whole frame past -1	-12
whole frame past -2		6	-15
whole frame past -3	-14		-26
whole frame past -4	-12	-6	-20
whole frame past defect			-14
whole frame past finish			-11
whole frame past here-before	27	7
whole frame past surface			-18
whole frame past tells			11
whole frame past tool			-22
whole frame past verbish			-19
whole frame past word			-21
whole frame past work			-24
whole frame present +1	-22	-12
whole frame present -1	9		-7
whole frame present -2	-7	-9
whole frame present -3		-8
whole frame present -4			-16
whole frame present area			-19
whole frame present finish			-18
whole frame present fixture			30
whole frame present here-after	11	-11
whole frame present here-before	34	-8	8
whole frame present material			-10
whole frame present part			11
whole frame present surface			14
whole frame present tells			-26
whole frame present tool			-8
whole frame present verbish			-13
whole frame present word			-13
whole heading	-8
whole heading +1	-15
whole heading -1	-11
whole heading -2	-8	-16	7
whole heading -3			7
whole heading -4	-11		-10
whole heading here-after	38	9
whole heading here-before	61	-6	-24
whole is-flaw	-10	-11
whole kind +1 area	-14	-7
whole kind +1 defect	-19
whole kind +1 finish	-15	-8
whole kind +1 fixture	-7
whole kind +1 material	-15
whole kind +1 part	-17
whole kind +1 size	-13	-6
whole kind +1 surface	-12
whole kind +1 tells	-18
whole kind +1 tool	-12
whole kind +1 verbish	-11
whole kind +1 word	-14
whole kind -1 area	-13	10	18
whole kind -1 defect		-19
whole kind -1 finish	-11
whole kind -1 fixture	19	11	14
whole kind -1 part	9		17
whole kind -1 size	13	-10
whole kind -1 surface		11
whole kind -1 tells	-19	-23	-12
whole kind -1 tool	-11	-19
whole kind -1 verbish		-16	-12
whole kind -1 word	-11	-8	-9
whole kind -1 work	-7	-7	-14
whole kind -2 area	-21
whole kind -2 defect	-6		-15
whole kind -2 finish	-19		-11
whole kind -2 fixture	21		24
whole kind -2 part	12
whole kind -2 size	-7		13
whole kind -2 surface	-10	14
whole kind -2 tells	-20
whole kind -2 tool	-8	-14	-18
whole kind -2 verbish	-9	-9	-8
whole kind -2 word	-8		-7
whole kind -2 work	-25		23
whole kind -3 area		10	9
whole kind -3 defect	-14		-12
whole kind -3 finish			-22
whole kind -3 material	-8		-10
whole kind -3 size	-24		-20
whole kind -3 surface		-6
whole kind -3 tells		-6	-24
whole kind -3 tool		-7	-18
whole kind -3 verbish	-13		-18
whole kind -3 work	-12		-6
whole kind -4 area			7
whole kind -4 defect	-12		-13
whole kind -4 finish	-13		-11
whole kind -4 fixture	8
whole kind -4 material	-7		-10
whole kind -4 part	-8		-8
whole kind -4 size	-14		-15
whole kind -4 surface	-11
whole kind -4 tells	-12	8	-23
whole kind -4 tool		21	-13
whole kind -4 verbish	-11		-15
whole kind -4 word	-9		-11
whole kind -4 work	-8		-25
whole kind area	-12		6
whole kind defect		-13	-11
whole kind finish	-7		-9
whole kind fixture	11	8	13
whole kind here-after area	-21	17
whole kind here-after defect	-18	-14
whole kind here-after finish	-16	-15
whole kind here-after fixture		15
whole kind here-after material	31
whole kind here-after part		10
whole kind here-after size	24	-8
whole kind here-after surface	20
whole kind here-after tells	24	-10
whole kind here-after tool		-26
whole kind here-after word		-8
whole kind here-before area	-18	-7	-35
whole kind here-before defect	62	-20
whole kind here-before finish	47
whole kind here-before fixture		13	22
whole kind here-before material	10		41
whole kind here-before part	10
whole kind here-before size	19		35
whole kind here-before surface	11	7	-14
whole kind here-before tells		11	-19
whole kind here-before tool	-28	10	-21
whole kind here-before verbish	12	-10	-11
whole kind here-before word	8
whole kind size	7
whole kind surface		7
whole kind tells	-8		-15
whole kind tool	-11	-7	-13
whole kind verbish		-6	-17
whole kind word	-12	-9	-10
whole kind work	-15	-14	-7
whole lead a -1	-33
whole lead a -2	-15	-14
whole lead a -3	-24	-16
whole lead a -4	-19
whole lead a here-after	140	-14
whole lead a here-before	-37	6
whole lead about -1	15
whole lead about -3	-13
whole lead about -4	-14
whole lead about here-after	-8
whole lead about here-before	43
whole lead all here-after		-9
whole lead area -1	7	-7
whole lead area -2	-19	18
whole lead area -3		-12
whole lead area -4		-10
whole lead area here-after	-8	-12
whole lead area here-before	23	9
whole lead at -1	-8
whole lead at -3	-9
whole lead at -4	-22
whole lead at here-after	-45
whole lead by -3	-19
whole lead by -4	-13
whole lead by here-after	-31
whole lead by here-before	24
whole lead defect -1	-14
whole lead defect -2	-14
whole lead defect -3	-13
whole lead defect -4	-13
whole lead defect here-before	36
whole lead down -1	-34
whole lead down -2	17
whole lead down here-after	-76
whole lead down here-before	73
whole lead every -2	-23
whole lead every -3	-23
whole lead every here-before	32
whole lead fixture -1	-27	7
whole lead fixture -2	-26
whole lead fixture -3	-23
whole lead fixture -4	-15
whole lead fixture here-after	-66	-21
whole lead fixture here-before	56	23
whole lead for -1	43
whole lead for -3	-10
whole lead for -4	-15
whole lead for here-before	53
whole lead from -1	16
whole lead from -2	7
whole lead from -4	-18
whole lead from here-after	-56
whole lead from here-before	24
whole lead in -1	22
whole lead in -2	-18
whole lead in -4	-16
whole lead in here-after	9	8
whole lead in here-before	23	-8
whole lead mark -3	-20
whole lead mark -4	-22
whole lead mark here-before	16
whole lead material -2	-11	-16
whole lead material -3	-19	7
whole lead material -4	-22
whole lead material here-after	12	-21
whole lead no here-after		-27
whole lead number -2		-22
whole lead number -3		8
whole lead number -4		-13
whole lead number here-after		-30
whole lead number here-before		68
whole lead of -1	83
whole lead of -2	-28
whole lead of -4	-19
whole lead of here-after	22	-18
whole lead of here-before	10	9
whole lead off -1	-13
whole lead off here-after	-23
whole lead on -1	-23
whole lead on -3	36
whole lead on here-before	-12	26
whole lead out -2	-34
whole lead out -3	-9
whole lead out here-after	22
whole lead over -1	-19
whole lead over -2	-27
whole lead over -3	55
whole lead over -4	-9
whole lead over here-after	-72
whole lead over here-before	24
whole lead part -1	-26
whole lead part -2		6
whole lead part -3	-24
whole lead part -4	-36
whole lead part here-after	-32	-20
whole lead part here-before	19
whole lead past -2	13
whole lead quantity -1		46
whole lead quantity -2	-8	26
whole lead quantity -3		-22
whole lead quantity -4	19	-11
whole lead quantity here-after		-17
whole lead quantity here-before	18
whole lead role -1		-44
whole lead role -2		-14
whole lead role -3		-10
whole lead role -4		-15
whole lead role here-after		52
whole lead role here-before		-29
whole lead size -1		-41
whole lead size -2	-16	-12
whole lead size -3	-11
whole lead size -4	-14
whole lead size here-after	-35	-17
whole lead size here-before	15	18
whole lead surface -2	-13	32
whole lead surface -3	-31	16
whole lead surface -4	-17	-11
whole lead surface here-after	-32	-23
whole lead surface here-before	20
whole lead tells -1	-17	-9
whole lead tells -3	17
whole lead tells -4		-8
whole lead tells here-after		-25
whole lead tells here-before	8	-10
whole lead that -1		-14
whole lead that -4		-18
whole lead that here-after		24
whole lead that here-before		6
whole lead the -1	-22
whole lead the -2	-11	-11
whole lead the -3	-10	-12
whole lead the -4	-24	-14
whole lead the here-after	123	25
whole lead the here-before		-26
whole lead time -2	-19
whole lead time -3	-27
whole lead time here-after	-91
whole lead time here-before	-29
whole lead to -1	7
whole lead to -3	-9
whole lead to -4	-11
whole lead to here-after	-19
whole lead to here-before	13	-20
whole lead tool -1		-10
whole lead tool here-before	-7	27
whole lead under -2	7
whole lead under here-before	-29
whole lead up -1	14
whole lead up -2	9
whole lead up -3	-30
whole lead up -4	-25
whole lead up here-before	23
whole lead verbish -1	8
whole lead verbish -2		-21
whole lead verbish -3	-11	-13
whole lead verbish -4	-17	-9
whole lead verbish here-after	37	-19
whole lead verbish here-before	20	11
whole lead with -1	-22	-33
whole lead with -2	17
whole lead with -3	-7
whole lead with -4		-13
whole lead with here-after	90
whole lead with here-before	-72	26
whole lead within -1	-44
whole lead within -2	-14
whole lead within -3	13
whole lead within here-before	16
whole lead word -1	-11	-13
whole lead word -2	-7	-13
whole lead word -3		-6
whole lead word -4	-8	-6
whole lead word here-after	15
whole lead word here-before	20
whole lemma be object		-20
whole lemma be subject-late	36	18
whole lemma call object	12
whole lemma call subject	32
whole lemma come object		-33
whole lemma come subject-late		-12
whole lemma crack subject		23
whole lemma cut object		-39
whole lemma do object		82
whole lemma drill object	25
whole lemma drop object	-39
whole lemma dump object		-22
whole lemma find object	74	24
whole lemma get object	31	-17
whole lemma get subject		-8
whole lemma get subject-late		-36
whole lemma go object		-7
whole lemma go subject-late		17
whole lemma hang object	22	-47
whole lemma hang subject	-8	-23
whole lemma have object	59	-11
whole lemma have subject-late	25	26
whole lemma hit object	12	-40
whole lemma hit subject		-9
whole lemma keep object		29
whole lemma land object		-22
whole lemma land subject		-9
whole lemma leak object		-25
whole lemma leave object	56	-27
whole lemma leave subject	14
whole lemma lift subject		-11
whole lemma make object	-23
whole lemma measure object	71
whole lemma measure subject	-6
whole lemma measure subject-late	-7
whole lemma move object	-27	56
whole lemma need object	28	39
whole lemma need subject	27	-18
whole lemma open object	-26
whole lemma pull object		13
whole lemma pull subject		-7
whole lemma pull subject-late		-46
whole lemma put object	16	17
whole lemma read object	21
whole lemma read subject-late	47
whole lemma rip subject	-15
whole lemma run object	-7	-8
whole lemma run subject	32
whole lemma sag subject	10
whole lemma say object	-8	55
whole lemma say subject	52	-16
whole lemma say subject-late		-9
whole lemma scrape object		-22
whole lemma see object		18
whole lemma set object		-18
whole lemma show object		-18
whole lemma sit object		-41
whole lemma stain object		30
whole lemma stand object	9	-13
whole lemma stand subject	22
whole lemma stick object	31	-42
whole lemma stick subject	7
whole lemma swap object		49
whole lemma take object		31
whole lemma take subject		16
whole lemma tell object	-30
whole lemma think object		11
whole lemma trip object		-8
whole lemma use object		-43
whole lemma want object	35	-20
whole lemma want subject	11	-8
whole not-carried	-32
whole not-carried +1 none	-19
whole not-carried +1 own	-14
whole not-carried +1 person	27
whole not-carried +1 pointer	-23
whole not-carried +1 tells	-15
whole not-carried -1 none	-8
whole not-carried -1 own	-23
whole not-carried -1 person	-31
whole not-carried -2 none	-22
whole not-carried -2 own	-15
whole not-carried -2 person	-25
whole not-carried -2 pointer	-29
whole not-carried -2 tells	-13
whole not-carried -3 none	-18
whole not-carried -3 own	-12
whole not-carried -3 person	-20
whole not-carried -3 pointer	-14
whole not-carried -3 tells	-14
whole not-carried -4 none	-21
whole not-carried -4 own	-20
whole not-carried -4 person	-16
whole not-carried -4 pointer	-24
whole not-carried here-after none	12
whole not-carried here-after own	28
whole not-carried here-after person	-55
whole not-carried here-after pointer	48
whole not-carried here-after tells	56
whole not-carried here-before none	7
whole not-carried here-before own	13
whole not-carried here-before person	9
whole not-carried here-before pointer	28
whole not-told		-14
whole not-told +1		-11
whole not-told -1		10
whole not-told here-after		-16
whole number many many			8
whole number many one			-37
whole number none one			-15
whole number one many			-6
whole opens-with +1	-21
whole opens-with -1	13
whole opens-with -3		-27
whole opens-with -4	-19	-10
whole opens-with here-after	39	7
whole part +1 bare	-16
whole part +1 object	-15
whole part +1 opens	-19
whole part +1 subject	-19
whole part +1 subject-late	-15
whole part -1 bare	-14
whole part -1 opens		-8
whole part -2 bare	-15		-6
whole part -2 object	-8	-8
whole part -2 subject-late	6	26	26
whole part -3 bare	-15		-10
whole part -3 object	-10	-7	-12
whole part -3 subject-late	9
whole part -4 bare			-14
whole part -4 object	-16	-8	-15
whole part -4 opens	-9
whole part -4 subject-late	6	-9
whole part bare	-7	-9	-11
whole part bare area	-9		-11
whole part bare defect	-12	-14	-28
whole part bare finish	8	-12	12
whole part bare fixture		15	14
whole part bare material			7
whole part bare part		-7	10
whole part bare size	13
whole part bare surface	-9
whole part bare tells			-18
whole part bare tool	21
whole part bare verbish		-15	-28
whole part bare word	-6		-11
whole part bare work	-8
whole part here-after bare	15	-16
whole part here-after object	10	-7
whole part here-after subject-late	-31	12
whole part here-before bare	28	20
whole part here-before object	26		16
whole part here-before opens	10		-36
whole part here-before subject			14
whole part here-before subject-late	33	14	-39
whole part object	-7	-11	-9
whole part object area	-16	10	17
whole part object defect		-12
whole part object finish	-11		-15
whole part object fixture	11		15
whole part object part		7	11
whole part object size	12	-7	-9
whole part object surface	8
whole part object tells	-14	-10	-18
whole part object tool	-17	-12	-12
whole part object verbish			-14
whole part object word	-12	-6	-12
whole part object work	-14		-9
whole part opens area	-7		8
whole part opens defect		-11	-9
whole part opens finish			-9
whole part opens fixture			8
whole part opens material	-6
whole part opens size		-11	-16
whole part opens surface	-11		10
whole part opens tells	10		-21
whole part opens tool			-11
whole part opens verbish	-13	-12	-10
whole part opens word			-8
whole part opens work	-19		-32
whole part subject area	-12		8
whole part subject defect	-10	-8	-33
whole part subject finish	10	21	14
whole part subject fixture	8
whole part subject part	-9
whole part subject size		8	26
whole part subject tells		-10	-30
whole part subject tool			-16
whole part subject verbish	-7		-22
whole part subject work	-9	-9	-21
whole part subject-late	9	9
whole part subject-late area			-12
whole part subject-late defect	-57	-23	-15
whole part subject-late finish	-19	-13	10
whole part subject-late fixture	31	23	24
whole part subject-late material			-16
whole part subject-late part	34		23
whole part subject-late size	8	22	-12
whole part subject-late surface	17	42	16
whole part subject-late tells		47	66
whole part subject-late tool	-8	30	-35
whole part subject-late verbish	-17	-24
whole part subject-late word	-14		-11
whole points both -1			13
whole points both -2			-26
whole points both -3			-16
whole points both -4			66
whole points both bare			34
whole points both here-before			-59
whole points both object			-51
whole points both opens			8
whole points em -1			-30
whole points em -2			-9
whole points em -3			-14
whole points em -4			-19
whole points em bare			-16
whole points em object			-31
whole points em opens			-37
whole points em subject			-7
whole points it -4			-13
whole points it bare			-7
whole points it object			-18
whole points it opens			-7
whole points it subject			8
whole points none -3			-17
whole points none -4			-13
whole points none bare			-13
whole points none here-before			15
whole points none object			-9
whole points none subject-late			19
whole points one -3			-17
whole points one here-before			49
whole points one opens			18
whole points one subject			15
whole points one subject-late			-11
whole points that -1			28
whole points that -2			14
whole points that -4			-39
whole points that bare			-32
whole points that here-before			16
whole points that object			23
whole points that subject			-10
whole points them -1			32
whole points them -2			-38
whole points them -3			-41
whole points them -4			-53
whole points them bare			-42
whole points them here-before			-32
whole points them object			-17
whole points them opens			-34
whole points them subject			-11
whole points them subject-late			-42
whole points they -1			-14
whole points they -2			9
whole points they -3			-14
whole points they -4			-11
whole points they bare			26
whole points they here-before			-17
whole points they object			-9
whole points they opens			-8
whole points they subject			-32
whole points they subject-late			11
whole points this -2			19
whole points this -3			-19
whole points this object			-49
whole points those -1			26
whole points those -2			-10
whole points those -3			20
whole points those -4			-35
whole points those bare			-35
whole points those object			37
whole points those subject			-11
whole points those subject-late			-11
whole prep about	29	-11	-14
whole prep across	-15		15
whole prep after	-21	-17	-31
whole prep against	6
whole prep along	-18	-24	-27
whole prep around	-10	34	44
whole prep at	-8	-7	-12
whole prep before	-9	-7	-19
whole prep behind		25	36
whole prep below	57		-26
whole prep beside		7
whole prep between	15	-13	-37
whole prep by	-26		-15
whole prep down	14	-20
whole prep for	7	17	16
whole prep from	-10	-14	-33
whole prep here-after about		-25
whole prep here-after above	32	-36
whole prep here-after after		-22
whole prep here-after along		-11
whole prep here-after around	-29	56
whole prep here-after at	42	-6
whole prep here-after before	-21
whole prep here-after behind	39	39
whole prep here-after below	58	-19
whole prep here-after by	-13
whole prep here-after down		-26
whole prep here-after for	-30	8
whole prep here-after from	28	-21
whole prep here-after in		8
whole prep here-after inside		-8
whole prep here-after into		-13
whole prep here-after near		-39
whole prep here-after of	53
whole prep here-after off	67	-6
whole prep here-after on	-9	16
whole prep here-after out		-16
whole prep here-after over	-26	13
whole prep here-after past		-15
whole prep here-after through		41
whole prep here-after to	-23	-14
whole prep here-after toward	-41	-32
whole prep here-after under		-18
whole prep here-after up		13
whole prep here-after with	-25	-31
whole prep here-after without		-22
whole prep here-before along	-48	-50
whole prep here-before at	-36		71
whole prep here-before behind	-6	33
whole prep here-before by	-60	13	-14
whole prep here-before for		72
whole prep here-before from	-34	-46	-10
whole prep here-before in	-20		-36
whole prep here-before of	30	17	14
whole prep here-before off	-28	33
whole prep here-before on		9
whole prep here-before out		-13
whole prep here-before over		22	-41
whole prep here-before to	-30	64	8
whole prep here-before toward	-12
whole prep here-before under	16	25
whole prep here-before up		-18
whole prep here-before with	53	-13
whole prep in	-8
whole prep inside	-32		20
whole prep into	-19	-19
whole prep near	-37	48	10
whole prep next	-12
whole prep off	20
whole prep on	-8	9
whole prep other about	47		-17
whole prep other above	-37	8	7
whole prep other across	-15	9	15
whole prep other after	-12	-7	-26
whole prep other along	-23		-27
whole prep other around	-10		44
whole prep other at	-15		-16
whole prep other before	-8	-7	-16
whole prep other behind	-15		38
whole prep other below	13		-26
whole prep other between	19	-17	-40
whole prep other by	-19	-7	-16
whole prep other down	12	-13
whole prep other for	11	9	18
whole prep other from	-17	-9	-34
whole prep other in	-9
whole prep other inside	-29	11	20
whole prep other into	-14	-16
whole prep other near	-12	56	10
whole prep other of	-9
whole prep other off	-14
whole prep other on	-9
whole prep other out	-17		12
whole prep other over	-9
whole prep other past	-7	-17	-54
whole prep other through		10	35
whole prep other to	-14	-12	-30
whole prep other toward	-15	-13	-38
whole prep other up	-8	-9	-8
whole prep other with	-11	-6	-14
whole prep other without	-12	-13
whole prep out	-16	-11	13
whole prep over	-11		-9
whole prep past	24	-20	-54
whole prep per	-11
whole prep through	7	28	35
whole prep to	-16	-8	-28
whole prep toward	-33	-29	-38
whole prep towards		-35
whole prep up	7	-7	-8
whole prep with	-8	-13	-15
whole prep without	-17	-27
whole rank after 0		-11
whole rank after 1	-20
whole rank after 2	-13
whole rank after 3	-17
whole rank after 4	-11
whole rank before 0	14
whole rank before 3	-7	-7
whole rank before 4	-19	-9	-14
whole says copula		-9	-10
whole says imperative		7	6
whole says modal			8
whole says none	-9	-11	-12
whole says owed			-9
whole says past	-10
whole says present		-13
whole sentences -1	-28	-15	-28
whole sentences -1 bare	-20	-14	-21
whole sentences -1 object	-19	-7	-17
whole sentences -1 opens	-16	-8	-16
whole sentences -1 subject	-10
whole sentences -1 subject-late	-6		-13
whole sentences -2	-23	-8	-30
whole sentences -2 bare	-16		-24
whole sentences -2 object	-14		-33
whole sentences -2 opens	-13
whole sentences -2 subject	-10		-12
whole sentences -2 subject-late		-8	15
whole sentences 1	-23	-11
whole sentences 1 bare	-14	-7
whole sentences 1 object	-13	-7
whole sentences 1 opens	-19
whole sentences 1 subject	-19
whole sentences 1 subject-late	-14	-9
whole size 2	-17	-11	-14
whole size 3	-10	-10	-15
whole stands-off-after		-9
whole subject none +1	-23	-8
whole subject none -3	-9	-9
whole subject none -4	-15
whole subject none here-after	16	-12
whole subject none here-before	20
whole subject own +1	-19	-6
whole subject own -1	-10
whole subject own -2	-14
whole subject own -3	-10	-7
whole subject own -4	-14	-8
whole subject own here-after		-13
whole subject own here-before	14
whole subject person +1	27	20
whole subject person -1		-37
whole subject person -2	-21	-8
whole subject person -3	-45
whole subject person here-after	-17
whole subject person here-before	-9	-23
whole subject pointer +1	-21	-7
whole subject pointer -1		-11
whole subject pointer -2		-16
whole subject pointer -3	-7	-12
whole subject pointer -4	-16	-10
whole subject pointer here-after	12	7
whole subject pointer here-before	37
whole subject tells +1	-15	-6
whole subject tells -1	28
whole subject tells here-after	60
whole subject tells here-before	15	-10
whole told -1		24
whole told -3		8
whole told defect		-16
whole told finish		60
whole told fixture		17
whole told here-after		12
whole told size		-25
whole told surface		13
whole told tells		24
whole told tool		-6
whole told verbish		-11
whole touches-after	40
whole touches-before	16
whole unit angle material	-11
whole unit angle word	-21
whole unit area defect	71
whole unit area fixture	-45
whole unit area part	-26
whole unit area size	-7
whole unit area verbish	-38
whole unit area word	-26
whole unit current defect	-40
whole unit current fixture	-23
whole unit current material	-19
whole unit current verbish	-11
whole unit current word	-31
whole unit flow area	-8
whole unit flow defect	-26
whole unit flow fixture	32
whole unit flow material	-21
whole unit flow word	-45
whole unit length area	-13
whole unit length defect	10
whole unit length finish	-7
whole unit length fixture	8
whole unit length size	6
whole unit length tells	-16
whole unit length tool	-12
whole unit length word	-10
whole unit length work	-15
whole unit none defect	-18	-13
whole unit none fixture	32	8
whole unit none surface		6
whole unit none tells	10
whole unit none tool	-9	-7
whole unit none verbish		-6
whole unit none word	-7	-10
whole unit none work		-14
whole unit other area	-10
whole unit other defect	-13
whole unit other material	-31
whole unit other part	-12
whole unit percent defect	-28
whole unit percent finish	17
whole unit percent fixture	-27
whole unit percent material	-25
whole unit percent part	-31
whole unit percent size	43
whole unit percent surface	7
whole unit percent tells	-48
whole unit percent verbish	-22
whole unit percent word	-11
whole unit pressure area	-22
whole unit pressure defect	-20
whole unit pressure fixture	-33
whole unit pressure material	-10
whole unit pressure part	-21
whole unit pressure size	23
whole unit pressure surface	-11
whole unit pressure word	-21
whole unit slope area	-13
whole unit slope fixture	-21
whole unit slope part	-9
whole unit slope surface	-20
whole unit slope word	-25
whole unit temperature area	18
whole unit temperature defect	-28
whole unit temperature material	-32
whole unit temperature part	-13
whole unit temperature size	-21
whole unit temperature surface	20
whole unit temperature word	-23
whole unit torque part	-16
whole unit torque word	-20
whole unit voltage defect	-53
whole unit voltage material	15
whole unit voltage part	77
whole unit voltage surface	-7
whole unit voltage verbish	-16
whole unit voltage word	-16
whole unit volume defect	-42
whole unit volume fixture	15
whole unit volume material	12
whole unit volume part	46
whole unit volume surface	-14
whole unit volume word	-53
whole unit weight area	-26
whole unit weight material	-31
whole use buy	-18	16	-7
whole use have	17	-11	13
whole use measure		-7	-15
whole use move	-7	-9	-13
whole use need	7		-6
whole use return	34	-13	8
whole use say	11	20	23
whole use see	-12	-15	-17
whole use use		-21	-9
whole use work	-10	-7	-8
whole where +1	-20
whole where -2	-6
whole where -3	-9	-8	-10
whole where -4	-13	-8	-15
whole where here-after	10	-10
whole where here-before	19		8
`;
