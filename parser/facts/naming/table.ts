/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-11
after at area		53
after at defect		-21
after at fixture	-8
after at part	10	25
after at surface	13	41
after at verbish		-27
after at word		9
after behind defect		-21
after behind fixture		-38
after behind word		-14
after by defect		-31
after by fixture	-14	-18
after by part		46
after by word	-16
after down defect		-15
after down word	-10
after end defect		-16
after for defect		-17
after from defect		22
after from part		-18
after from surface	-7	-55
after from word	-7	60
after in area		-14
after in defect		-18
after in fixture		-8
after in material		34
after in part		90
after in surface		16
after in tool		-12
after in verbish		35
after in word	-10
after mark defect		-10
after mark word		-37
after number word		-12
after of defect		-33
after of finish	-14
after of material	35
after of surface	26
after off part		79
after off verbish	-9
after off word		-34
after on defect		-17
after on fixture		25
after on material	-9	106
after on part		-95
after on size	-9
after on surface	11	51
after on tells	-7
after on word	-12	-49
after out defect		-9
after out material		27
after out surface		45
after out word		-36
after over defect		-14
after over size	-9
after quantity area		9
after quantity defect		-36
after quantity fixture		19
after quantity material		18
after quantity part		56
after quantity size		53
after quantity surface		-58
after quantity tells		-37
after quantity verbish		42
after quantity word		-8
after term area		25
after term defect		-33
after term finish	13	-43
after term fixture	-6	61
after term material	8	-28
after term part	46	50
after term size		9
after term surface	-17	-11
after term verbish	-14	43
after term word		21
after through defect		-16
after to defect		-25
after to part	-11
after up defect		-11
after up word	-6
after with defect		-14
after with word		-7
after word area	-14	47
after word defect	-11	-31
after word finish		23
after word fixture	-22	13
after word material	8	50
after word part	-12	24
after word size	6
after word surface	-7	36
after word tells		-21
after word tool		-18
after word verbish	-12	23
article a		-25	-9
article none	-7	-13	-16
article other	-14	-11	-15
article the	15	30	28
behind about +1		-13
behind about -1		-35
behind about -2		-34
behind about here-after		-7
behind about here-before		80
behind above +1	-18
behind above -1	47
behind above -2	-14
behind above here-before	-45
behind across +1	-27
behind across -1	89
behind across -2	-52
behind across -3	-17
behind across -4	-35
behind across here-after	-16
behind across here-before	12
behind after +1	-20
behind after -1	15
behind after -2	-28
behind after here-before	61
behind at +1	-21	-27
behind at -1	-21	9
behind at -2	25	-29
behind at -3		-21
behind at -4	-16	-24
behind at here-after		7
behind at here-before	36	50
behind before here-after	-16
behind behind +1		-22
behind behind -1		25
behind behind -2		-28
behind behind -3		-17
behind behind here-before		9
behind below +1	-17
behind below -1	-15
behind below -2	28
behind below here-before	19
behind by +1	-20	-20
behind by -1	-16	-30
behind by -2		-65
behind by -3	-14
behind by -4	18	32
behind by here-before	38	65
behind centers -1	-63
behind deep +1	-19
behind deep -1	17
behind deep -2	-15
behind deep -3	-33
behind deep -4	-22
behind deep here-after	-12
behind deep here-before	55
behind down +1	-13	-25
behind down -1	12	-54
behind down -2	-39	18
behind down -3	-29	-21
behind down here-after		36
behind down here-before	18	35
behind end +1	-21	-6
behind end -1	13	17
behind end -2	-13	-17
behind end -3	-7
behind end -4	-11	-21
behind end here-after		-15
behind end here-before	32	29
behind for +1	-24	-32
behind for -1	49	91
behind for -2	-38	54
behind for -3	37	-43
behind for -4	-34	-21
behind for here-after	-22	-85
behind from +1	-22	-33
behind from -1	30	-34
behind from -2	-15	-31
behind from -3	-37
behind from -4		13
behind from here-after	-11	13
behind from here-before	46	50
behind high +1	-26
behind high -1	13
behind high -2	26
behind high -3	-28
behind high -4	-15
behind high here-after	-12
behind high here-before	36
behind in +1	-15	24
behind in -2	11	-23
behind in -3		-28
behind in -4	-21	-35
behind in here-after	-7	12
behind in here-before	13	24
behind into here-after		-17
behind into here-before		-29
behind long +1	-18
behind long -1	26
behind long -2	-20
behind long -4	-29
behind long here-after	-10
behind long here-before	38
behind low +1	-11
behind low -1	16
behind low -2	-19
behind low -3	-15
behind low -4	-19
behind low here-before	44
behind mark +1	-11	-21
behind mark -1		-53
behind mark -2		64
behind mark -3		-9
behind mark -4		-18
behind mark here-after	-9	-12
behind mark here-before	48	13
behind near here-after		-14
behind near here-before		47
behind number +1		-34
behind number -3		-23
behind number -4		-40
behind number here-after		6
behind number here-before		77
behind of +1	-33	-52
behind of -1	11	29
behind of -2	-28	33
behind of -3	-42
behind of -4	-15	-6
behind of here-after	34	-11
behind of here-before	41
behind off +1	-24	-25
behind off -1		-21
behind off -2		-31
behind off -3	-10	-46
behind off -4	-12	41
behind off here-after	-9	54
behind off here-before	52	-17
behind on +1		-29
behind on -1	20	-14
behind on -2	-12	8
behind on -3	26	-27
behind on -4	-14	-14
behind on here-after	-12	19
behind on here-before	-11	33
behind out +1	-18
behind out -1	-23	-44
behind out -2	13	-45
behind out -3		45
behind out -4	-29	-19
behind out here-after	-7	11
behind out here-before	56	51
behind over +1	-21	-7
behind over -1		-29
behind over -2		-37
behind over -3	-6	-13
behind over -4	-20	-7
behind over here-after	-13	44
behind over here-before	44	36
behind quantity -1	16	6
behind quantity -2	-35	11
behind quantity -3	-7	-26
behind quantity -4	-7	-20
behind quantity here-after	-7
behind quantity here-before	28	17
behind short +1	-12	-54
behind short -1	38	-35
behind short -2	-64	-27
behind short -3	-24	65
behind short -4	19
behind short here-after	9	12
behind short here-before	28	23
behind tall +1	-24
behind tall -1	-47
behind tall -2	54
behind tall -4	27
behind tall here-before	23
behind term +1	-20	-27
behind term -1	6	7
behind term -2	26	-6
behind term -3	-25	-15
behind term -4	-33	-23
behind term here-after		22
behind term here-before	35	44
behind thick +1	-24
behind thick -1	11
behind thick here-before	-56
behind through +1		-12
behind through -2		-27
behind through -3		-15
behind through -4		-24
behind through here-after		39
behind through here-before		19
behind time -2		-19
behind time -3		-21
behind time here-after		-29
behind to +1	-25	-29
behind to -1	17	-11
behind to -2	6	-15
behind to -3	-10	-27
behind to -4		-10
behind to here-after	-15
behind to here-before	25	78
behind toward -1	-15
behind toward -2	64
behind toward here-after	-18
behind under +1	-22	28
behind under -1	-7
behind under -2	-25
behind under here-after		-17
behind under here-before	58	13
behind up +1	-24	-15
behind up -1	7	-26
behind up -2	69	-33
behind up -3	-26	-10
behind up -4	-31	-19
behind up here-after		11
behind up here-before	-9	62
behind wide +1	-34
behind wide -1	-9
behind wide -2	8
behind wide -3	-12
behind wide -4	-18
behind wide here-before	50
behind with +1	-9	-13
behind with -1	-57	40
behind with -2		-28
behind with -3	38	-37
behind with -4	-15	-18
behind with here-after	-9	-18
behind with here-before	49	35
behind word +1	-13	-12
behind word -1	-8	-14
behind word -2	10	6
behind word -3		-12
behind word -4	-25	-11
behind word here-after	-7	21
behind word here-before	34	13
between 	23	23
between about	-33
between and	-91
between are	21	56
between at	26
between be	7	9
between by	-32
between come		52
between come out	22
between cut	61
between get		69
between get a		40
between has		7
between has a		22
between have		38
between have a		14
between is	49	23
between just		8
between measure	21
between of	33
between on	-42
between only	53
between over	8
between read	21
between run	51
between say	-32
between sit	29
between still		16
between the		-35
between to	57
between want	18
between were		40
carried	41
carried -1 none	19
carried -1 person	75
carried -1 pointer	57
carried -1 tells	78
carried -2 none	37
carried -2 own	8
carried -2 pointer	68
carried -2 tells	81
carried -3 none	46
carried -3 own	13
carried -3 pointer	32
carried -4 none	11
carried -4 pointer	52
carried here-before none	21
carried here-before own	37
carried here-before pointer	38
carried here-before tells	18
counted bare		19	17
counted count	17	13	21
counted current	-12		-8
counted length	-16		-31
counted pack	-8	-9	-15
counted percent		10
counted power	-16
counted pressure	-13	-37	-16
counted slope	-9
counted time		-32	-22
counted voltage		-32
counted volume	-13	15	-28
counted weight		-13	-28
does ask fixture			41
does ask material			-21
does ask part			25
does ask surface			-68
does ask verbish			-11
does be area			-12
does be defect			-11
does be finish			-36
does be fixture			34
does be size			-31
does be surface			11
does be tells			-30
does be tool			29
does be verbish			21
does blow part			67
does blow word			-45
does bring defect			-15
does bring material			-16
does bring part			-36
does bring surface			-30
does bring tool			12
does bring word			27
does call area			-23
does call defect			-36
does call fixture			-38
does call material			58
does call part			12
does call word			-17
does change area			49
does change defect			-11
does change material			-6
does change part			23
does change surface			-74
does change word			16
does check word			-28
does clean defect			-21
does clean fixture			-11
does clean material			-13
does clean part			56
does clean surface			-16
does clean word			7
does close area			15
does close defect			-24
does close material			-48
does close surface			57
does close word			-10
does come area			18
does come defect			-27
does come fixture			-31
does come material			-20
does come part			46
does come surface			6
does come verbish			62
does cut defect			18
does cut fixture			19
does cut material			30
does cut part			-29
does cut size			-37
does cut verbish			-24
does cut word			-18
does dig part			42
does dig word			42
does do defect			-20
does do fixture			102
does do material			-81
does do part			27
does do surface			9
does dry area			19
does dry fixture			95
does dry material			-107
does dry word			-37
does file part			74
does file word			-9
does fill area			-27
does fill defect			75
does fill fixture			-36
does fill material			36
does fill surface			23
does fill word			-50
does finish word			-52
does fix defect			-11
does fix material			-26
does fix word			-14
does flip defect			-14
does flip word			-11
does flush fixture			21
does flush part			-20
does flush word			-24
does fre fixture			32
does get area			-35
does get defect			26
does get finish			-34
does get fixture			38
does get part			60
does get tool			-34
does get verbish			-9
does get word			-30
does glue area			-16
does glue surface			-31
does glue word			-43
does go area			17
does go finish			-20
does go material			41
does go part			34
does go surface			-39
does go verbish			-64
does hang area			-29
does hang defect			-38
does hang fixture			19
does hang material			35
does hang part			78
does hang word			-38
does has material			86
does have area			-19
does have defect			32
does have part			34
does have surface			-11
does have tool			27
does have verbish			-11
does have word			-26
does hit defect			-30
does hit surface			101
does i'll material			-41
does leave material			7
does leave part			-28
does leave surface			26
does leave verbish			11
does leave word			18
does let fixture			88
does let material			17
does let surface			-30
does let word			13
does look area			24
does look defect			-35
does look fixture			47
does look part			29
does look word			-48
does make defect			48
does make material			-23
does measure word			-22
does move area			11
does move material			-30
does move part			18
does move surface			-29
does move word			14
does need area			-8
does need defect			-16
does need material			7
does need part			64
does need surface			-7
does need verbish			-34
does need word			-12
does open area			18
does open defect			38
does open fixture			36
does open material			-11
does open part			12
does open word			-46
does order defect			-6
does order part			20
does order verbish			57
does order word			-48
does paint material			29
does patch area			63
does patch material			72
does patch surface			-13
does patch word			39
does pick word			57
does plane defect			-16
does plane fixture			45
does plane surface			-40
does plane word			-40
does plug word			69
does pull defect			-21
does pull fixture			-22
does pull part			40
does pull surface			-19
does pull word			-36
does put area			-22
does put defect			-14
does put finish			-21
does put fixture			14
does put material			14
does put part			58
does put size			63
does put surface			-24
does put verbish			-27
does put word			-51
does replace area			-43
does replace defect			-25
does replace material			-8
does replace part			14
does replace surface			16
does replace word			9
does reset defect			-17
does reset material			68
does reset part			7
does reset word			-31
does rip defect			38
does rip material			-51
does run defect			55
does run fixture			44
does run material			-92
does run part			25
does run surface			-14
does run verbish			-43
does run word			-34
does sand area			14
does sand defect			-16
does sand fixture			49
does sand material			-19
does sand surface			43
does sand verbish			7
does sand word			-73
does say area			34
does say defect			-21
does say fixture			38
does say material			-20
does say part			35
does say verbish			-53
does say word			-10
does scrape word			-23
does screw fixture			7
does screw word			-24
does scribe word			-44
does seal defect			-11
does seal material			-21
does seal surface			81
does seal word			-60
does see area			-11
does see defect			-20
does see fixture			-40
does see part			-20
does see surface			73
does see verbish			18
does see word			22
does send defect			34
does send material			27
does send surface			-34
does send word			-8
does set defect			-24
does set surface			60
does shim defect			-13
does shim material			-14
does shim word			18
does sister material			139
does sister word			-54
does sit word			-45
does skim surface			47
does skim word			-36
does snug defect			-14
does snug part			6
does snug word			21
does splice defect			-32
does splice material			17
does splice word			20
does stick word			-10
does swap area			-27
does swap defect			-27
does swap fixture			-54
does swap material			11
does swap part			77
does swap size			-20
does swap surface			-45
does swap verbish			46
does swap word			11
does take area			-16
does take defect			-28
does take fixture			30
does take material			11
does take part			-19
does take surface			-48
does take verbish			-30
does take word			75
does tape defect			-27
does tape material			23
does tape part			-60
does tape word			46
does tell material			-70
does tell verbish			69
does tell word			-25
does think word			53
does tighten defect			-30
does trim defect			-24
does trim material			25
does trim word			-13
does turn defect			-22
does turn material			27
does turn part			8
does use material			-29
does walk surface			-19
does want area			-12
does want defect			-40
does want finish			-16
does want material			46
does want word			-31
far after 1	-14	30
far after 13+	-21	-16
far after 2	-9
far after 3-4	-10
far after 5-7	-10	-8
far after 8-12	-14
far before 0	24	24	-18
far before 1	15	20	-17
far before 13+	-21	-29
far before 2	22	25	-11
far before 3-4	20	15
far before 5-7	14
far before 8-12		-9	12
figure-between	-10	7
flawed	14		45
frame copula +1	-16	-7
frame copula -2	-8	-8
frame copula -3	-10	-11
frame copula -4	-18	-18
frame copula defect			-10
frame copula finish			-52
frame copula fixture			23
frame copula here-before	36	31
frame copula material			24
frame copula part			32
frame copula size			-50
frame copula surface			18
frame copula tells			-41
frame copula tool			-23
frame copula verbish			12
frame copula word			-37
frame imperative +1	-18	7
frame imperative -2	-11	9	13
frame imperative -3		-30	16
frame imperative -4		-37	-24
frame imperative area			24
frame imperative defect			-12
frame imperative finish			-30
frame imperative fixture			38
frame imperative here-after		18
frame imperative here-before	26	26	-8
frame imperative part			26
frame imperative size			9
frame imperative surface			7
frame imperative tells			-59
frame imperative tool			-28
frame imperative verbish			-19
frame imperative word			-11
frame modal +1	-27	8
frame modal -1	31	-28	-10
frame modal -2	13	26	25
frame modal -3	-37		11
frame modal -4	28	-20	-18
frame modal defect			-14
frame modal finish			-23
frame modal fixture			17
frame modal here-after	-27	7
frame modal here-before	-6		-22
frame modal material			-8
frame modal part			39
frame modal size			37
frame modal surface			17
frame modal tells			-40
frame modal verbish			-16
frame modal word			-16
frame none +1	-21	-24
frame none -1	12	7	36
frame none -3	-6	-13	-14
frame none -4	-24	-13	-19
frame none area			42
frame none defect			-22
frame none finish			25
frame none fixture			-6
frame none here-after		9
frame none here-before	36	32	-59
frame none verbish			-22
frame none word			-6
frame owed +1	-27	-13
frame owed -1		-56	16
frame owed -2		-41	15
frame owed -3	-14	-10
frame owed -4			-35
frame owed area			11
frame owed defect			-21
frame owed finish			-38
frame owed fixture			18
frame owed here-after	-22	45
frame owed here-before	45	59	-10
frame owed material			18
frame owed part			8
frame owed surface			6
frame owed tells			-41
frame owed tool			-13
frame owed verbish			12
frame owed word			-16
frame past +1	-19	-17
frame past -1		8	36
frame past -2	9	-19
frame past -3	-10		-18
frame past -4	-26	-15	-35
frame past area			-17
frame past defect			-18
frame past finish			-6
frame past fixture			17
frame past here-after		24
frame past here-before	46	16	-8
frame past material			27
frame past part			44
frame past size			-16
frame past surface			-15
frame past tool			-8
frame past verbish			-19
frame past word			-20
frame past work			-19
frame present +1	-26	-16
frame present -1		9	-7
frame present -2		-9	6
frame present -3	12
frame present -4	-13	-11
frame present defect			-14
frame present finish			-7
frame present fixture			46
frame present here-after	-15
frame present here-before	29	27	20
frame present material			8
frame present word			-18
heading	-11		-11
heading +1	-20	-14
heading -1	-22		-31
heading -2	-11	16
heading -3		30	-14
heading -4	-6	10
heading here-after		-37
heading here-before		12	-39
join	-10	-9	-14
join +1	-8		-11
join +1 defect			-7
join +1 fixture			-15
join +1 part	-7
join +1 size			13
join +1 tells			-17
join +1 tool			-17
join +1 word			-10
join +1 work			-10
join -1	-6
join -1 area			10
join -1 defect	-11		-8
join -1 finish			-14
join -1 fixture	9		19
join -1 part	6		6
join -1 tells	-8		-11
join -1 word			-7
join -1 work	-6
join -2			-8
join -2 finish	-8
join -2 material			-8
join -2 size	-9		-8
join -2 tells	-6
join -2 tool	-7		-7
join -2 work	-12		-6
join -3	-14		-13
join -3 defect	-6		-8
join -3 finish			-6
join -3 material	-7
join -3 part	-6		-8
join -3 size	-10		-15
join -3 surface			-8
join -3 tells			-8
join -3 verbish	-8		-8
join -3 work	-7		-15
join area	-8		8
join area+area		-10	-21
join area+finish			9
join area+fixture			-7
join area+material			10
join area+size	-7		17
join area+surface		12	8
join area+tells		44	30
join area+tool		-8	-9
join defect	-10		-9
join defect+fixture		-6
join finish	-9		-9
join finish+defect	-8	-6
join finish+finish			-11
join finish+fixture		9	-7
join finish+part	9	7
join finish+size	-14
join finish+tells	-9
join finish+tool	-14
join fixture	10
join fixture+area		32
join fixture+defect		-11
join fixture+finish		26	-11
join fixture+fixture	16	18	10
join fixture+material	-6
join fixture+part			9
join fixture+size	20	17	7
join fixture+tells	14	21
join fixture+tool		-26	-12
join fixture+verbish		-8
join fixture+work	-10		-14
join heading	-8
join leads about		-8
join leads about quantity across	-19
join leads along	9	-15	-9
join leads around		19	7
join leads at quantity to	-9
join leads at term verb		-8
join leads at verb word		16
join leads at word		11
join leads at word term		-7
join leads at word verb		-9
join leads at word word		-9
join leads before		-7
join leads before word verb	18	9	40
join leads behind	27
join leads behind word word	16	22	10
join leads between	17
join leads by		13	15
join leads by term	9
join leads by term quantity		20
join leads down	9
join leads down word		-37
join leads for		12
join leads for term		-10
join leads for word		17
join leads for word term	-10	-14	-10
join leads from	-8
join leads in	6
join leads in term			-11
join leads in term of		-7
join leads in term quantity	-9
join leads in term term		14	30
join leads in term word		-6
join leads in verb behind		8
join leads in word	11
join leads into	-8		-11
join leads into word at		6
join leads mark		-7	-8
join leads near		38	10
join leads next to		18
join leads number			19
join leads number verb		-9
join leads number word word		19
join leads of quantity	-32
join leads of quantity word	-10
join leads of term	-15		-9
join leads of term term	-13
join leads of term verb	-8
join leads of term word	-10	-7
join leads of word		-16
join leads of word quantity	-9
join leads of word verb		-16	-6
join leads of word word		-7
join leads off term word		22	34
join leads on in		7
join leads on quantity		11	9
join leads on term term	-9	-6	9
join leads on term verb		15
join leads on term word			17
join leads on verb verb	-13
join leads on word quantity			-7
join leads on word term		-11	-10
join leads on word word	-18	-8	-11
join leads out	6
join leads out of		-9
join leads out on		-9
join leads over	6	7	6
join leads over term word			7
join leads over to	9	-7
join leads quantity at			-8
join leads quantity by quantity			8
join leads quantity from		-8
join leads quantity of		-23
join leads quantity of quantity			-9
join leads quantity of word		13	6
join leads quantity off			-6
join leads quantity on		-9
join leads quantity term word		22	9
join leads quantity verb word	-12	-30	-15
join leads quantity word		6
join leads quantity word quantity		6
join leads quantity word verb		34
join leads quantity word word		-9	-7
join leads term			-6
join leads term by	-17	-16
join leads term on		27
join leads term over	-9	-8
join leads term quantity at		-13
join leads term term verb		-9
join leads term term word		-8
join leads term verb			10
join leads term verb by		8
join leads term verb in		19
join leads term verb quantity		8
join leads term verb word	9
join leads term word	7	-9	-10
join leads term word verb	14	-15	-7
join leads time		38	17
join leads time before word		-9
join leads to			-8
join leads to term word	6	-7
join leads to verb	8		-8
join leads to verb quantity		-27	-9
join leads under		13
join leads under term word	13
join leads under word word		-17	-7
join leads up in			9
join leads verb at			9
join leads verb at quantity			-6
join leads verb behind	-7
join leads verb by		-8	8
join leads verb by quantity		-8
join leads verb for	-6	-11
join leads verb in		8	9
join leads verb mark		9
join leads verb of		9
join leads verb off		18
join leads verb on		-15
join leads verb on word		7
join leads verb out		-14
join leads verb out quantity			-19
join leads verb quantity		-7	12
join leads verb quantity by	-8
join leads verb quantity of		-16	-9
join leads verb quantity on			-13
join leads verb quantity term		33
join leads verb quantity to	-9
join leads verb quantity word	15	10
join leads verb term		-9
join leads verb term in		-9
join leads verb term on		-15
join leads verb term term		-12
join leads verb term verb		17
join leads verb to	7		33
join leads verb to verb			7
join leads verb under		40
join leads verb verb down	-9	-10
join leads verb verb from			13
join leads verb verb in			35
join leads verb verb on	-8
join leads verb verb out			-9
join leads verb verb term		-17	11
join leads verb verb word		-10
join leads verb with			23
join leads verb word			-8
join leads verb word in			-7
join leads verb word on		-8
join leads verb word quantity	6	9
join leads verb word term	-8	13
join leads verb word verb		-12	8
join leads verb word with		-7
join leads verb word word		-10
join leads with quantity		-9
join leads with verb word		9
join leads word at		-6	-21
join leads word in		-6
join leads word in term		-7
join leads word in verb	-10
join leads word number word			-11
join leads word of	12	-9
join leads word on			-9
join leads word on quantity			-6
join leads word quantity	-7		-13
join leads word quantity of		-9	15
join leads word quantity on		-14
join leads word quantity word	13	-7	-8
join leads word term	10
join leads word term at	8	23
join leads word term by	-10		-7
join leads word term of		-10
join leads word term quantity	-8	-9
join leads word term verb	-8	11
join leads word to	-10
join leads word to verb	11
join leads word up word	-12	-20
join leads word verb	-8	-6
join leads word verb about		11
join leads word verb at		-12
join leads word verb from	-8	13	-15
join leads word verb in		-9	-12
join leads word verb quantity		-6	-10
join leads word verb term	-6	-8	-6
join leads word verb up		16	-9
join leads word verb word		-9	8
join leads word with			-8
join leads word word at			6
join leads word word in	-8
join leads word word quantity	-11	-10	-9
join leads word word term	-7	-16
join leads word word to		-9	14
join leads word word verb		-15
join leads word word word		8
join links 	11	-10	-8
join links about quantity across	-21
join links along	11	-30	-29
join links around		23	9
join links at	12	19
join links at quantity	9		11
join links at quantity off	29
join links at quantity to	-32
join links at quantity word		-15
join links at term verb	30	-7	39
join links at term word	59		28
join links at verb word		17
join links at word	47	8	6
join links at word term	-7	-15	9
join links at word verb	16	-16
join links at word word	6	-10	40
join links before word verb	13		19
join links behind	22		45
join links behind term word	8	-7
join links behind word word	19	34	11
join links between	15
join links by		20	39
join links by term	8		13
join links by term quantity		6
join links by term verb	12		17
join links by term word	75		6
join links down	32		-8
join links down word		-11
join links for	-6	24
join links for quantity	-16
join links for term		-10
join links for term word			-15
join links for word		19
join links for word term		-15	-13
join links from		6	-8
join links in	15	18	29
join links in about quantity	-20
join links in quantity		8	17
join links in term		15	27
join links in term of		-8
join links in term quantity	19
join links in term term		11	66
join links in term verb	32		15
join links in term word	29		-8
join links in verb behind		14
join links in word	23		10
join links in word term	11	-6
join links in word verb	-17	-10
join links in word word		-13	-12
join links into			-11
join links mark	13		-17
join links near	11	51	74
join links next to		57
join links number		-7	43
join links number word word		12
join links of	24	32	28
join links of quantity	-21		36
join links of quantity word	-12	-6
join links of term	-10		-11
join links of term term	-13
join links of term verb	-46		38
join links of term word	-29	-11	-21
join links of verb word		-8
join links of word verb		-17	-8
join links of word word	51	-24
join links off			12
join links off term word			13
join links on		11	24
join links on in		26	-10
join links on quantity		14	29
join links on term	-33	-8	-11
join links on term term		-9	39
join links on term verb	20	15	-13
join links on term word	-27	17	38
join links on verb verb	-22
join links on verb word	-6
join links on word		-8	-12
join links on word quantity			-21
join links on word term		-11	-23
join links on word verb	-10
join links on word word	-27		-21
join links out of		-12
join links out of word		-10
join links out on		-9
join links over	14	24	14
join links over term word		-8	44
join links over to	6	-8
join links quantity	-8		7
join links quantity at	38	-19	-21
join links quantity by quantity	-24	-30	-43
join links quantity from	-43	-32	-7
join links quantity from term	-19	-17
join links quantity in	-14		-7
join links quantity mark		-10
join links quantity of	8	-11
join links quantity of quantity			-11
join links quantity of term	18
join links quantity of word		12	6
join links quantity on	30	-16
join links quantity on word	18
join links quantity over	22
join links quantity term to	-14
join links quantity term word	-17	24	11
join links quantity to	-10	-21
join links quantity toward		-9
join links quantity verb quantity	18	9
join links quantity verb word	-50	-15	-28
join links quantity word at	-22	-8
join links quantity word mark	6
join links quantity word quantity	-14		-9
join links quantity word to	-19
join links quantity word verb		-15
join links quantity word word	-16	-10	-13
join links term			7
join links term at	29	-11	13
join links term by	-9	-21
join links term in		26	20
join links term on			-8
join links term over	-21	-12
join links term quantity at	-27
join links term term	-13
join links term term verb	-8	-6
join links term term word		-14
join links term verb	-9		7
join links term verb in		6
join links term verb quantity	-13
join links term verb term		-6
join links term verb word	14	-6	-16
join links term word	18	-12	-29
join links term word in		36
join links term word verb	44	-9	-11
join links term word word			-16
join links through	9
join links time	11	23
join links time before word		-11
join links to		8
join links to term word	25	-14	10
join links to verb			-10
join links to verb quantity		-14	-7
join links under	-11	31	44
join links under term word	55
join links under word word	18	-16	-26
join links up in	-7	18	24
join links verb	15
join links verb at		-8	64
join links verb at quantity	6	-14	-11
join links verb behind	-17	-39	-49
join links verb by	15	-25	78
join links verb by quantity		-11
join links verb for	-20	-14
join links verb from		-11
join links verb in		-9	-13
join links verb mark		24
join links verb of	-8	17	-11
join links verb off		9
join links verb on	12		10
join links verb on word	10	-10	-7
join links verb out	25	-23
join links verb out quantity	-26	-20	-44
join links verb quantity	26	-8	19
join links verb quantity at	-14	-20	-23
join links verb quantity from	63	-15
join links verb quantity in	9	-7
join links verb quantity of	-8		-12
join links verb quantity off	53
join links verb quantity on	16	20	-39
join links verb quantity term	-8	8	-15
join links verb quantity to	-21
join links verb quantity up	-16
join links verb quantity verb	23	-8
join links verb quantity word	15	9
join links verb term	24
join links verb term at		-17
join links verb term from		-14
join links verb term in		-15	-18
join links verb term of			14
join links verb term on		-7
join links verb term to	10	-13
join links verb term word	-9	-19	-15
join links verb time			-7
join links verb to	9		13
join links verb under		10
join links verb up word			29
join links verb verb	-6		13
join links verb verb at		-17
join links verb verb by		-11	-22
join links verb verb down	-42	-33
join links verb verb from		-14
join links verb verb in		19	33
join links verb verb on	-43	-12
join links verb verb out	-27	-7	-18
join links verb verb quantity		7	-17
join links verb verb term		-14
join links verb verb verb	8		18
join links verb verb with	-7	-13	-9
join links verb verb word	28
join links verb with		-13	22
join links verb word	-13	-10	-15
join links verb word in		-21	-37
join links verb word on		-10	21
join links verb word quantity	27	17	27
join links verb word term	21
join links verb word up			-13
join links verb word verb	-39	-24
join links verb word with		-10	-8
join links verb word word	-26	-14
join links with	12		8
join links with quantity	25	-13
join links with term word			21
join links with verb word		19
join links word at		-9	-8
join links word at quantity	9
join links word in		-9	-12
join links word in at		-29
join links word in term		-7
join links word in verb	-24
join links word number word			-18
join links word on		-8	-14
join links word on quantity			-17
join links word on term		-6	9
join links word quantity		-8	-9
join links word quantity at	22	-8
join links word quantity from	19
join links word quantity of		-14	14
join links word quantity off	-35
join links word quantity on		-17
join links word quantity term	-29	-7	16
join links word quantity verb	12
join links word quantity word		-16
join links word term	31		-11
join links word term at	19	36
join links word term by	-18	-14	-29
join links word term in		-11
join links word term of		-13
join links word term on		-8
join links word term quantity	-25		-6
join links word term term		-9
join links word term verb	-21		-14
join links word term with			-10
join links word term word	7	-10
join links word to	-37
join links word to verb	41	6
join links word up word	-25	-38
join links word verb		-7	10
join links word verb about	-18
join links word verb at		-26	8
join links word verb behind		43
join links word verb down		-6
join links word verb from	-7	16	-28
join links word verb in	9	-12	-38
join links word verb on	13		15
join links word verb over	-16
join links word verb quantity	47		-20
join links word verb to	14	-14
join links word verb up	-9	20
join links word verb verb	-14		10
join links word verb word	-14		-15
join links word with	-6		-13
join links word word		-7
join links word word at			11
join links word word by	8
join links word word in			-22
join links word word mark	-27
join links word word quantity	-36	-16	-9
join links word word term	-26	-16
join links word word to		-13	14
join links word word verb	7	-18
join links word word word		13	8
join material		-8
join material+area		7
join material+defect	8	-7
join material+finish	8	-8	-7
join material+fixture		15	16
join material+material			9
join material+part			12
join material+size		-17
join material+tells		-13	-12
join material+verbish		-7
join material+word		-11	-8
join material+work			-8
join part+defect		-7	-13
join part+finish		-8
join part+fixture		13	20
join part+material	9
join part+size	12	8
join part+surface		6
join part+tells		-23	-17
join part+tool	8
join part+work			-10
join same-after	21		14
join same-after area		13	17
join same-after defect	20	-13
join same-after fixture	8	8	24
join same-after material	13		7
join same-after part	11	7	20
join same-after size	22
join same-after surface	18
join same-after tells	-11	-6	31
join same-after verbish			-6
join same-after word	-7	-6
join same-before size	11
join same-before tells	-11		-6
join same-before word		-6
join same-before work		-7
join size 2	-9	-14	-24
join size 3			-14
join size+defect	-7	-7	-7
join size+finish	-15		-12
join size+fixture	12		8
join size+material		-13
join size+part			9
join size+size			28
join size+surface			-8
join size+tells		10
join size+tool	-9		8
join size+verbish	7	-11
join size+word			-8
join sizes 1+1		6	15
join sizes 1+2	-9	-6	-11
join sizes 2+1		-15	-20
join sizes 2+2	-11
join sizes 2+3	-10		-12
join sizes 3+1			-7
join sizes 3+2			-7
join sizes 3+3	-12	-18	-23
join surface+area		17	24
join surface+defect	8	-8
join surface+finish			21
join surface+fixture	7
join surface+part		14
join surface+surface	6	12	-8
join surface+tells		-7
join surface+verbish		15
join surface+word	-7		-7
join surface+work		-11	-10
join tells	-6	-6	-16
join tells+finish	-16
join tells+fixture	16	13
join tells+material			-6
join tells+part	-10	-11	-12
join tells+surface			-6
join tells+tells			-20
join tells+word		-8
join tool	-9
join tool+area		-11
join tool+defect	-9	-6	-6
join tool+finish	-9		21
join tool+fixture		-20	-13
join tool+size			6
join tool+surface	-8		-7
join tool+tool			-7
join verbish	-6		-14
join verbish+area			13
join verbish+finish	-8	-9	-10
join verbish+fixture	7		-7
join verbish+size	-8	-7
join verbish+surface		10
join verbish+tells	-6	-13	-6
join verbish+verbish		-11	-7
join verbish+word		-9	-8
join word			-12
join word+area		7
join word+finish	6
join word+tells	-12	-8
join word+word			-7
join work	-8		-19
join work+fixture	-11		-7
join work+surface	9
join work+word		-7
kind +1 area	-16	-13
kind +1 defect	-11	-8
kind +1 finish	-11	-16
kind +1 fixture	-16
kind +1 material	-15	-9
kind +1 part	-25
kind +1 size	-14
kind +1 surface	-18	-8
kind +1 tells	-10	-15
kind +1 tool	-8	-18
kind +1 verbish	-9	-23
kind +1 word	-10	-11
kind +1 work	-7
kind -1 area	-25	20
kind -1 defect	-22	-32	-23
kind -1 finish	-26	-23	-32
kind -1 fixture	26	35	47
kind -1 material	34		17
kind -1 part	16	6	68
kind -1 size	13		11
kind -1 surface		9
kind -1 tells	-25	-54	-13
kind -1 tool	-13	-11	11
kind -1 verbish	-13	-11	-6
kind -1 word	-9	-14	-14
kind -1 work	15	-23
kind -2 area	-26		14
kind -2 defect	-20	-15	-12
kind -2 finish	-36	-40	-17
kind -2 fixture	43	18	33
kind -2 material	10	-13	20
kind -2 part		7	7
kind -2 size	16
kind -2 surface		22
kind -2 tells	-28	14	-54
kind -2 tool	-19	-40	-54
kind -2 verbish		-16	-7
kind -2 word	-9	-12
kind -2 work	-28	-21	-25
kind -3 area	10		6
kind -3 defect	-10	-9	-14
kind -3 finish	-21	-11	-19
kind -3 fixture		28	12
kind -3 material		-12
kind -3 part	13	-7	18
kind -3 size	-43	-24	-60
kind -3 surface	-6	-10	19
kind -3 tells	-15	-12	-24
kind -3 tool	-23	15	-7
kind -3 verbish		-7	-7
kind -3 word	-12	-13	-19
kind -3 work	32	-9	-7
kind -4 area		-9
kind -4 defect	-11	-7	-11
kind -4 finish	12	7	-9
kind -4 fixture			-16
kind -4 material	-19
kind -4 part		-11	-23
kind -4 size	-7	-16
kind -4 surface	-16	-6
kind -4 tells	-10		-26
kind -4 tool			-24
kind -4 verbish	-10
kind -4 word		-13	-13
kind -4 work	-13	-10	-17
kind area	-10
kind defect	-14	-22	-17
kind finish	-15	-13	-19
kind fixture	17	22	22
kind here-after area	-7	46
kind here-after defect	-7	-21
kind here-after finish	22
kind here-after fixture	-20	13
kind here-after material		30
kind here-after part		36
kind here-after size		26
kind here-after surface		20
kind here-after tells	-7	-42
kind here-after tool		6
kind here-after verbish	-9	25
kind here-after word	-7	6
kind here-before area	-18	-22	-62
kind here-before defect	12	35	32
kind here-before finish		9
kind here-before fixture	26	28	29
kind here-before material	39	44
kind here-before part	62	41	24
kind here-before size	30
kind here-before surface	33		-8
kind here-before tells	-15	-10	-24
kind here-before tool	-23	28	17
kind here-before verbish	26		-41
kind here-before word	8		-25
kind material	13	11	14
kind part	12	20	27
kind size	10		-7
kind surface		6
kind tells	-18	-20	-32
kind tool	-14		-12
kind verbish			-8
kind word	-12	-17	-21
kind work		-17	-34
lead a -1	6
lead a -2	45	-33
lead a -3	-40	-18
lead a -4	-34	-8
lead a here-after	39	18
lead a here-before	-34	46
lead about -1	-7
lead about -3	-24
lead about -4	-7
lead about here-after	8
lead about here-before	47
lead area -1		-38
lead area -2		27
lead area -3		-17
lead area -4		-15
lead area here-after		-9
lead area here-before		33
lead at -1	-16
lead at -3	-16
lead at -4	-14
lead at here-after	-10
lead at here-before	64
lead by -1	-12
lead by -3	-13
lead by -4	12
lead by here-before	24
lead defect -1	-12
lead defect -2	-11
lead defect -3	-19
lead defect -4	-16
lead defect here-after	-6
lead defect here-before	42
lead down -2	-8
lead down here-after	-22
lead down here-before	47
lead every -1	-66
lead every -2	-54
lead fixture -1	-37	7
lead fixture -2	-13
lead fixture -3	-24
lead fixture -4	-8
lead fixture here-after	-10	-14
lead fixture here-before	62	16
lead for -1	24
lead for -2	-30
lead for -3	-16
lead for -4	-12
lead for here-before	33
lead in -1	-12
lead in -2	19
lead in -3	30
lead in -4	-29
lead in here-before	16
lead mark -1	23
lead mark -2	-11
lead mark -3	-27
lead mark -4	-12
lead mark here-after	-8
lead mark here-before	33
lead material -1	13	10
lead material -2	-32	-12
lead material -4	-14	-22
lead material here-after		-16
lead material here-before	20	22
lead number -1		10
lead number -2		43
lead number -3		-17
lead number -4		-51
lead number here-after		-19
lead number here-before		50
lead of -1	35
lead of -2	-30
lead of -3	-29
lead of here-after	-11
lead of here-before	28
lead off here-after	-8
lead off here-before	41
lead on -2		47
lead on here-after		24
lead on here-before		-35
lead out -1	24
lead out -2	-54
lead out -3	32
lead out -4	-36
lead out here-before	56
lead over -1	-21
lead over -2	11
lead over -3	62
lead over -4	-19
lead over here-before	-17
lead part -1	-27
lead part -2	-17	-16
lead part -3	-27	-10
lead part -4		-11
lead part here-after		-19
lead part here-before	53	33
lead past -2	21
lead quantity -1		20
lead quantity -2		11
lead quantity -3	-8	-32
lead quantity -4	-12
lead quantity here-after		-12
lead quantity here-before	35	55
lead role -1		-83
lead role -2		-48
lead role -3		-26
lead role -4		48
lead role here-after		132
lead size -1	-27	-36
lead size -2		-36
lead size -3	18	-18
lead size -4	-8
lead size here-after	-11	29
lead size here-before	30	39
lead surface -1	-8	17
lead surface -2	10	-8
lead surface -3	-29	18
lead surface -4	-18	-21
lead surface here-after	-9	-26
lead surface here-before	34	14
lead tells -1	-15	-9
lead tells -2		-34
lead tells -3		33
lead tells -4		-28
lead tells here-after		-37
lead that -1		-35
lead that -3		-34
lead that -4		23
lead that here-after		16
lead that here-before		30
lead the -1	7	-17
lead the -2		-27
lead the -3		-26
lead the -4	23	-45
lead the here-after		68
lead the here-before		-18
lead to -1	26	27
lead to -2	12	30
lead to -3	-27
lead to here-after		28
lead to here-before	17	-17
lead tool -1		-29
lead tool -2		-25
lead tool -3		-15
lead tool -4		22
lead tool here-after		-8
lead tool here-before		35
lead up -1	48
lead up -2	-20
lead up -4	-26
lead up here-before	9
lead verbish -1	10
lead verbish -3	-8
lead verbish -4	-23	-13
lead verbish here-after	-10	-21
lead verbish here-before	40	33
lead with -1	-44	-13
lead with -2		-12
lead with -3		23
lead with -4		-26
lead with here-after	8	-26
lead with here-before		56
lead within -1	-43
lead within -2	42
lead word -1	7	10
lead word -3	-13	-12
lead word -4	-12	-11
lead word here-after		11
lead word here-before	28	27
lemma be object	-13	-15
lemma be subject	36	26
lemma bend subject		44
lemma buzz object		-33
lemma buzz subject		40
lemma call subject	20
lemma come object		-21
lemma crack object		14
lemma crack subject		58
lemma cut object		10
lemma drill object	-39
lemma drill subject	51
lemma drip object		-22
lemma drip subject		51
lemma dump object		-15
lemma dump subject		27
lemma find object		79
lemma finish object	12
lemma get object		-21
lemma get subject		55
lemma go object	13	-10
lemma go subject	25	-12
lemma hang object	7	-36
lemma hang subject	29	-57
lemma have object		-16
lemma have subject	38	18
lemma have subject-late	-47
lemma hit object		-66
lemma hit subject		71
lemma hold object	34
lemma hold subject	69
lemma hum subject		-26
lemma keep subject		52
lemma land object		-19
lemma land subject		-30
lemma leak object		-8
lemma leak subject		38
lemma leave object	76	25
lemma leave subject		19
lemma make object		61
lemma measure object	-25
lemma measure subject	36
lemma measure subject-late	-11
lemma miss object		67
lemma move object	-26	31
lemma need object	-15	60
lemma need subject	24
lemma pull object	25	42
lemma put object	-28	-38
lemma read object	-35
lemma read subject	-18	29
lemma rip subject	68
lemma run object	-20	-23
lemma run subject	-52	46
lemma say object	-17	130
lemma say subject	-9	-29
lemma see object		22
lemma send object		-48
lemma show subject		-21
lemma sit object	28	-52
lemma sit subject	35	24
lemma stick object		-30
lemma stick subject	57	71
lemma swap object		25
lemma take object		63
lemma tell object	-6
lemma think object		-78
lemma trip object		-15
lemma trip subject		15
lemma turn subject		-16
lemma use object		107
lemma want object	46	43
lemma want subject	-6
lemma weep subject		43
lemma wobble subject		43
not-carried	-37
not-carried +1 none	-16
not-carried +1 own	-12
not-carried +1 pointer	-21
not-carried +1 tells	-18
not-carried -1 own	-19
not-carried -1 person	-54
not-carried -1 pointer	-11
not-carried -1 tells	-16
not-carried -2 none	-38
not-carried -2 own	-13
not-carried -2 person	-38
not-carried -2 pointer	-45
not-carried -2 tells	-40
not-carried -3 none	-15
not-carried -3 own	-8
not-carried -3 person	-28
not-carried -3 pointer	-13
not-carried -3 tells	-36
not-carried -4 none	-14
not-carried -4 own	-16
not-carried -4 person	13
not-carried -4 pointer	-32
not-carried -4 tells	-17
not-carried here-after own	-8
not-carried here-before none	39
not-carried here-before own	30
not-carried here-before person	-8
not-carried here-before pointer	22
not-carried here-before tells	-35
not-told		-22
not-told +1		-13
not-told -1		24
not-told -2		-8
not-told -3		-8
not-told -4		-12
not-told here-after		-18
not-told here-before		25
number many many			69
number many one			-58
number none many			11
opens-with +1	-40
opens-with -1	50	-17
opens-with -2	9	-10
opens-with -3	-11	-24
opens-with -4	-36	-28
opens-with here-after	-10	43
part +1 bare	-13
part +1 object	-14	-12
part +1 opens	-22	-12
part +1 subject	-20
part +1 subject-late	-15	-34
part -1 bare	-26	-13	-26
part -1 object	-15
part -1 opens	23	9	17
part -1 subject	28	10	36
part -1 subject-late			24
part -2 bare	-16	-7	-14
part -2 object	-7	-10
part -2 opens			15
part -2 subject	13	-11	26
part -2 subject-late	8	22
part -3 bare	-21		-10
part -3 object	-15	-14	-9
part -3 opens	23	10	15
part -3 subject	-9	-13
part -3 subject-late		-16	13
part -4 bare	-9	-10
part -4 object	-16	-18	-18
part -4 subject	-9		-17
part -4 subject-late		-7	-30
part bare	-24	-14	-15
part bare area	-10	7
part bare defect	-16	-16	-28
part bare finish	-23	-9
part bare fixture			-22
part bare material		9	-15
part bare part	-13		16
part bare size	-24	-8	19
part bare surface	-25	-14	-10
part bare tells	-32	-9	-26
part bare tool	45	-30	15
part bare verbish			31
part bare word	-18	-17	-16
part bare work	-8	-34
part here-after bare		-18
part here-after opens		54
part here-after subject		68
part here-after subject-late	-23	10
part here-before bare			-50
part here-before object	17	10	-7
part here-before opens	45	35	-45
part here-before subject	40	30	15
part here-before subject-late			-54
part object	-25	-18	-17
part object area	-16
part object defect	-14	-21	-14
part object finish	-13	-23	-28
part object fixture	-8	20	21
part object part	8	22	28
part object size	10		14
part object surface			-8
part object tells	-22	-21	-23
part object tool	-18	-18	-6
part object verbish	-8	-6	-17
part object word	-16	-18	-19
part object work	-15	-13	-12
part opens	22	19	14
part opens area	12	8	36
part opens defect	17	-22	17
part opens finish	-42	-10	-31
part opens fixture	28	34	64
part opens material	30	20	17
part opens part	25	17	15
part opens size			-36
part opens surface		34	28
part opens tells	14	32	-26
part opens tool	-11		-16
part opens verbish	15
part opens word		7	-15
part opens work	16		-28
part subject	23	17	19
part subject area	-19	27
part subject defect	-20	-34	-48
part subject finish	58	50	18
part subject fixture	36	22	24
part subject material	12	14	28
part subject part	8	16	21
part subject size	25		-25
part subject surface	22	7	18
part subject tells	-13	-37	-39
part subject tool	-15	74	-45
part subject verbish		8	-22
part subject word	8
part subject work	8	-30	-19
part subject-late area	-19	-21	-23
part subject-late defect	-23
part subject-late finish	-19	20	29
part subject-late fixture			-17
part subject-late material	26	19	40
part subject-late part	10	-12	12
part subject-late size	23	11
part subject-late surface	-9	30	-9
part subject-late tells			-15
part subject-late tool	-34	-25
part subject-late verbish		12	52
part subject-late word		-12	-21
points both -1			23
points both -2			-78
points both -3			14
points both -4			16
points both here-before			24
points both object			-44
points both opens			9
points both subject			34
points em -1			-7
points em -2			25
points em -3			11
points em -4			-31
points em bare			-10
points em opens			-17
points em subject-late			13
points it -2			13
points it -4			-11
points it bare			-21
points it here-before			-8
points it object			-21
points it opens			7
points it subject			28
points none -1			20
points none -3			-13
points none -4			-17
points none bare			-17
points none object			-21
points none opens			20
points none subject			19
points none subject-late			-8
points one -1			45
points one -2			-24
points one -3			-20
points one -4			-13
points one bare			17
points one object			-13
points one opens			-10
points one subject			8
points one subject-late			12
points that -1			25
points that -2			10
points that -3			29
points that -4			-52
points that bare			-54
points that here-before			-24
points that opens			17
points that subject			18
points that subject-late			-32
points them -1			72
points them -4			-83
points them bare			-32
points them here-before			-19
points them object			37
points them subject			-18
points them subject-late			-20
points they -1			17
points they -2			9
points they -3			-36
points they bare			37
points they here-before			-8
points they object			-41
points they opens			54
points they subject			-26
points they subject-late			41
points this -1			-40
points this -2			54
points this -4			-32
points this object			-10
points this opens			21
points this subject			-13
points those -1			-12
points those -2			22
points those -3			46
points those -4			-45
points those bare			28
points those here-before			-26
points those object			-12
points those opens			33
points those subject			-19
points those subject-late			-13
prep about		-10	-38
prep above	-25		-29
prep across	-20	-42	-8
prep after	-36	-48	-29
prep along	-37		-15
prep around	-26	12	15
prep at	-25	-24	-23
prep before	-7	-9	-13
prep behind	-12	-26	-31
prep below	22	-20	-17
prep between		43	-23
prep by	-38	-38	-61
prep down	-11	33
prep for	-29		-11
prep from	-27	-36	-48
prep here-after about		-10
prep here-after at		-16
prep here-after before	-18
prep here-after behind	22	-26
prep here-after below		-79
prep here-after by	-18	-25
prep here-after down		42
prep here-after for	-17	-6
prep here-after from		-48
prep here-after in	-9	12
prep here-after into		-35
prep here-after near		-34
prep here-after of	11
prep here-after off		29
prep here-after on	-9	23
prep here-after out		-10
prep here-after over	-9	-8
prep here-after past		-20
prep here-after through		59
prep here-after to	-14	-38
prep here-after toward	-17	-67
prep here-after under		-31
prep here-after up		63
prep here-after with	-7	-52
prep here-after without		-53
prep here-before along		-49
prep here-before at	-70	-38	12
prep here-before behind		-22
prep here-before by	-80	-100	-52
prep here-before for	-43	-13
prep here-before from	-107	-41	9
prep here-before in	-20	-15	-15
prep here-before of	-7	12	-23
prep here-before off	-48	-39
prep here-before on	-17	-25	11
prep here-before over	-30	-45
prep here-before to	-43	-53	-15
prep here-before under	-52	-50
prep here-before up		-18
prep here-before with	7	-22
prep in	-14	-12	-24
prep inside	-18	45
prep into	-14	-27	-22
prep near	-45	-47	-52
prep of	-11	-6	-17
prep off	-18	7	10
prep on	-17	-8	-10
prep other about			-36
prep other above	-43		-23
prep other across	-7	-40	-8
prep other after	-38	-20	-29
prep other along	-31	21	-13
prep other around	-34	-12	15
prep other at	-21	-23	-24
prep other before		-17	-13
prep other behind	-23	-18	-31
prep other below	44		-17
prep other between	-13		-23
prep other by	-27	-24	-59
prep other down	-16	12
prep other for	-24		-10
prep other from	-24	-25	-55
prep other in	-13	-16	-24
prep other into			-20
prep other near	-32	-19	-52
prep other of	-16	-12	-16
prep other off	-18		12
prep other on	-15	-16	-10
prep other out	-16	-30	-7
prep other over	-19		-31
prep other past		21
prep other through	-6	-25	19
prep other to	-20	-22	-28
prep other toward	-17	-42	-48
prep other under	-25	-25	-52
prep other up	45		14
prep other with	-16	-18	-23
prep other without			21
prep out	-33		6
prep over	-21	-8	-45
prep past	-8
prep through	-38	20	19
prep to	-23	-28	-28
prep toward	-38	-69	-48
prep under	-31	-39	-53
prep up	32	18	14
prep with	-15	-24	-24
prep without	-7	-44	21
rank after 0	-10
rank after 1	-9
rank after 2	-11	-7
rank after 3	-14	-11
rank after 4	-16
rank before 0	11	20	-14
rank before 1	18	7	8
rank before 2		-9	8
rank before 3	-10	-11
rank before 4	-13	-23	-8
says copula	10		7
says modal	-6		-18
says owed	-7
says past	-10
says present			-14
sentences -1	-33	-44	-53
sentences -1 bare	-25	-24	-35
sentences -1 object	-23	-20	-29
sentences -1 opens	-23	-27	-43
sentences -1 subject	-6	-28
sentences -1 subject-late	-18	-7	-29
sentences -2	-25	-29	-51
sentences -2 bare	-13	-14	-22
sentences -2 object	-8	-14	-28
sentences -2 opens	-18	-19	-24
sentences -2 subject	-24	-11	-40
sentences 1	-18	-37
sentences 1 bare	-12	-32
sentences 1 object		-22
sentences 1 opens	-21	-37
sentences 1 subject	-21	-30
sentences 1 subject-late	-18	-20
size 1	-19	-30	-36
size 2	17	24	40
size 3	19	42	40
stands-off-after	-8	10
subject none +1	-21	-17
subject none -2		-9
subject none -4	-19	-14
subject none here-after		14
subject none here-before	37	29
subject own +1	-12	-9
subject own -1	-18
subject own -2	-12
subject own -3		-12
subject own -4	-17	-15
subject own here-after		-8
subject own here-before	41	32
subject person -1	27	-30
subject person -2	-45	-14
subject person -3	-46
subject person -4	58	12
subject person here-after	-17	12
subject pointer +1	-33	-19
subject pointer -1	29
subject pointer -2	9	-9
subject pointer -3	-16	-19
subject pointer -4	-20	-19
subject pointer here-after	-10	40
subject pointer here-before	32	-7
subject tells +1	-19	27
subject tells -1	43	-63
subject tells -2	8	-42
subject tells -3	16	30
subject tells -4	-19	-19
subject tells here-after		9
subject tells here-before	-25	23
told -1		64
told -2		29
told -3		44
told -4		7
told defect		-30
told finish		10
told fixture		26
told here-after		16
told here-before		15
told material		26
told part		31
told size		-28
told surface		16
told tells		41
told verbish		9
touches-before	24	23
unit area area	-27
unit area defect	-8
unit area fixture	-33
unit area material	58
unit area part	-15
unit area surface	33
unit area word	-30
unit current defect	-23
unit current part	53
unit current surface	-35
unit current verbish	16
unit current word	-29
unit flow material	-16
unit flow part	50
unit flow word	-11
unit length area	-11
unit length defect	-10
unit length finish	-25
unit length fixture	17
unit length material	12
unit length part	7
unit length size	18
unit length tells	-15
unit length tool	-21
unit length word	-14
unit length work	-22
unit none defect	-21	-22
unit none finish		-13
unit none fixture	23	21
unit none material	18	11
unit none part	24	21
unit none size	-16
unit none surface		6
unit none tells	-12	-20
unit none tool	-14
unit none verbish	-10
unit none word	-11	-17
unit none work	35	-17
unit other defect	-29
unit other material	15
unit other part	-41
unit other surface	-16
unit other word	48
unit percent area	-14
unit percent fixture	-15
unit percent material	12
unit percent part	-9
unit percent size	14
unit percent surface	52
unit percent tells	-54
unit percent tool	29
unit percent verbish	-32
unit percent word	-12
unit pressure defect	-14
unit pressure material	10
unit pressure part	-49
unit pressure size	38
unit pressure surface	19
unit pressure verbish	-13
unit slope material	-30
unit slope part	7
unit slope surface	20
unit slope word	25
unit temperature defect	-12
unit temperature fixture	-21
unit temperature material	-16
unit temperature part	6
unit temperature size	14
unit temperature word	15
unit voltage defect	-27
unit voltage material	-39
unit voltage part	58
unit voltage verbish	-20
unit voltage word	26
unit volume material	-38
unit volume part	16
unit volume surface	44
unit volume word	-40
unit weight word	-13
use buy	-12		-11
use have	9	-14	11
use measure	9	-17
use move	-11	-8	-23
use need		-14
use return		30
use say	-10		-33
use see	20	-13	-10
use use		-6	-29
use work	-7
where +1	-20	-11
where -1			13
where -2		-9	8
where -3	-8	-11
where -4	-16	-16	-20
where here-after		9
where here-before	35	29	-10
whole after about defect		-9
whole after at area		-25
whole after at defect		19
whole after at fixture	10
whole after at material		-31
whole after at part	74	64
whole after at surface		-18
whole after at verbish	9	-19
whole after at word	55	-7
whole after behind defect		-20
whole after behind word		-27
whole after below material	62
whole after by defect		-15
whole after by fixture	-9	-26
whole after by part		-9
whole after by word	-38	9
whole after centers size	38
whole after down word	-14
whole after end defect		-14
whole after for defect		-10
whole after from fixture	22
whole after from part		-11
whole after from surface	-27	-13
whole after from word	11	52
whole after in area		-11
whole after in defect		-10
whole after in fixture		-13
whole after in material		9
whole after in surface	-42	-13
whole after in tool		-7
whole after in verbish		-14
whole after in word	-15	-28
whole after number defect		-11
whole after of defect		-17
whole after of material	60
whole after of word	35
whole after off material	21
whole after off surface	20
whole after off verbish	-38
whole after off word	46	-13
whole after on defect		-15
whole after on size	-34
whole after on surface	69	-24
whole after on tells	-11
whole after on word	-11	-23
whole after out defect		-6
whole after out material		-7
whole after out surface		-22
whole after over defect		-7
whole after over size	-33
whole after quantity area		14
whole after quantity defect		-11
whole after quantity fixture		-15
whole after quantity material		-34
whole after quantity surface		19
whole after quantity tells		-16
whole after quantity verbish		-16
whole after quantity word		-18
whole after term area	-7	34
whole after term defect		-24
whole after term finish	-32	-14
whole after term fixture	41	37
whole after term part		-18
whole after term size	59	-18
whole after term surface		-22
whole after term verbish	10
whole after term word	9	-15
whole after through defect		-7
whole after to defect		-8
whole after to part	-24
whole after to surface	33
whole after to word	-36
whole after up defect		-10
whole after up word	-26
whole after with defect		-17
whole after with word		-8
whole after word area	-30	11
whole after word defect	-48	-15
whole after word finish		-10
whole after word fixture	-49
whole after word material	-8
whole after word part	-47
whole after word size	59	-9
whole after word surface	7	9
whole after word tells	-14
whole after word tool		-32
whole after word word		-8
whole article a	9	-9	7
whole article none	-12	-12	-25
whole article other	-7		-11
whole article the		7	15
whole behind about -1		19
whole behind about -2		-19
whole behind about here-after		-11
whole behind above +1	-18
whole behind above -1	12
whole behind above -2	-23
whole behind above here-after	7
whole behind above here-before	19
whole behind across +1	-27
whole behind across -1	38
whole behind across -2	-33
whole behind across -3	-11
whole behind across -4	-25
whole behind across here-after	-55
whole behind across here-before	83
whole behind after +1	-12
whole behind after -1	-21
whole behind after -2	-24
whole behind after here-before	41
whole behind at +1	-12	-7
whole behind at -1	-40
whole behind at -2	-11	-13
whole behind at -3	-18	-9
whole behind at -4	-15	-6
whole behind at here-after	68	9
whole behind at here-before		11
whole behind before here-after	-30
whole behind behind here-after	77	38
whole behind behind here-before		-10
whole behind below +1	-13
whole behind below -1	-7
whole behind below here-after	53
whole behind by +1	-10	15
whole behind by -1		-43
whole behind by -2	27	-33
whole behind by -3	-26
whole behind by -4	9	-9
whole behind by here-after	-18	-27
whole behind by here-before	25	-22
whole behind centers -1	-21
whole behind centers here-after	31
whole behind deep +1	-18
whole behind deep -2	-23
whole behind deep -3	-31
whole behind deep -4	-30
whole behind deep here-after	-45
whole behind deep here-before	12
whole behind down +1	-16	-13
whole behind down -1	63	-13
whole behind down -2	-41
whole behind down here-after	10	18
whole behind down here-before	20	8
whole behind end +1	-22	-8
whole behind end -1	9	-6
whole behind end -2	-7	-14
whole behind end -3	-17
whole behind end -4	-13	-9
whole behind end here-after		-14
whole behind end here-before	18	18
whole behind for +1	-14
whole behind for -1	37
whole behind for -2	-26
whole behind for -3	-13	-15
whole behind for -4	-12
whole behind for here-after	-58	-40
whole behind for here-before		39
whole behind from +1	-13	-14
whole behind from -1		-26
whole behind from -3	-10
whole behind from -4	-9	31
whole behind from here-after	8	18
whole behind from here-before	27	14
whole behind high +1	-17
whole behind high -1	22
whole behind high -2	6
whole behind high -3	-28
whole behind high -4	-26
whole behind high here-after	-7
whole behind high here-before	21
whole behind in +1	-19	-9
whole behind in -1	22	30
whole behind in -2	31	-11
whole behind in -3	-30	-10
whole behind in -4	-16	-11
whole behind in here-after	-24	-28
whole behind in here-before	28	8
whole behind into here-after		-35
whole behind long +1	-19
whole behind long -1	30
whole behind long -2	-17
whole behind long -4	-27
whole behind long here-after	-23
whole behind long here-before	63
whole behind low +1	-13
whole behind low -1	-65
whole behind low -3	-7
whole behind low -4	38
whole behind low here-before	-48
whole behind mark +1	-12
whole behind mark -1	26
whole behind mark here-after	-45	25
whole behind mark here-before	-11	40
whole behind near here-after		-15
whole behind near here-before		37
whole behind number -2		-29
whole behind number -4		-7
whole behind number here-after		60
whole behind number here-before		-6
whole behind of +1	-17
whole behind of -1	-28
whole behind of -2	-25
whole behind of -3	-19
whole behind of here-after	75
whole behind off +1	-14
whole behind off -1	-6	-22
whole behind off -2	15	-8
whole behind off -3	16
whole behind off -4	-13
whole behind off here-after	26	24
whole behind off here-before		-16
whole behind on +1		-12
whole behind on -1	-32
whole behind on -2	-33
whole behind on -3	22	-19
whole behind on -4	6
whole behind on here-after	-6	-12
whole behind on here-before	-33	-19
whole behind out +1	-11
whole behind out -1	-24	-46
whole behind out -3	36
whole behind out here-after	14	-40
whole behind over +1	-24
whole behind over -1	21
whole behind over -2	-28
whole behind over -3	-14
whole behind over -4	-17
whole behind over here-after	-30	47
whole behind over here-before	24	6
whole behind quantity +1	-7	-6
whole behind quantity -1	-7	-14
whole behind quantity -2	-36	17
whole behind quantity -3		-16
whole behind quantity here-after	19	-18
whole behind quantity here-before	-20	6
whole behind short +1	-12
whole behind short -1	-28	16
whole behind short -2	-30
whole behind short -3	-8
whole behind short here-after	-10
whole behind short here-before	15
whole behind tall +1	-13
whole behind tall -1	15
whole behind tall -2	26
whole behind tall here-before	-43
whole behind term +1	-10	-16
whole behind term -1	13	9
whole behind term -2	-10	-17
whole behind term -3	-8	-9
whole behind term -4	-19
whole behind term here-after	26	-8
whole behind term here-before	12	-6
whole behind thick +1	-35
whole behind thick -1	27
whole behind thick here-before	-23
whole behind through here-after		18
whole behind through here-before		-24
whole behind to +1	-20	-7
whole behind to -1	6
whole behind to -2	8
whole behind to -3	-6
whole behind to here-after		-8
whole behind to here-before	31	19
whole behind toward -1	-21
whole behind toward -2	17
whole behind toward here-after	-56
whole behind under +1	-23
whole behind under -1	53
whole behind under -2	-17
whole behind under here-after		-11
whole behind under here-before	48
whole behind up +1	-19
whole behind up -1	9	14
whole behind up -2	24
whole behind up -3	-17
whole behind up -4	-22	-8
whole behind up here-after	51	-17
whole behind up here-before	-50
whole behind wide +1	-17
whole behind wide -1	-27
whole behind wide -2	-30
whole behind wide -3	-12
whole behind wide -4	-31
whole behind wide here-before	39
whole behind with +1	-9
whole behind with -1	-13	-12
whole behind with -2	-6
whole behind with -3	13
whole behind with -4	-20
whole behind with here-after	15	-52
whole behind with here-before		-7
whole behind word +1	-15
whole behind word -2	6
whole behind word -4	-16	-8
whole behind word here-before	17
whole between 	19	10
whole between about	44
whole between and	-85
whole between are	7
whole between be	28
whole between by	41
whole between come		8
whole between come out	10
whole between for	65
whole between get		17
whole between has		29
whole between have		21
whole between have a		15
whole between is	24	11
whole between just		7
whole between maybe	12
whole between measure	-22
whole between of	35
whole between on	24
whole between only	24
whole between over	7
whole between read	53
whole between run	46
whole between say	10
whole between sit	-20
whole between still		26
whole between the		-41
whole between to	16
whole between up	34
whole between with		-12
whole carried	26
whole carried -1 none	6
whole carried -1 own	57
whole carried -1 person	10
whole carried -1 pointer	15
whole carried -1 tells	54
whole carried -2 none	27
whole carried -2 own	52
whole carried -2 pointer	24
whole carried -2 tells	58
whole carried -3 pointer	-11
whole carried -4 none	6
whole carried -4 own	20
whole carried here-before none	33
whole carried here-before pointer	41
whole carried here-before tells	17
whole counted count	26	-8	49
whole counted current	-10	-6	11
whole counted length	8		-12
whole counted percent	35		13
whole counted power	-26
whole counted pressure	-13	-15	-9
whole counted slope	-23
whole counted time	33	-32
whole counted volume	6		-32
whole counted weight	-8		-21
whole does ask fixture			36
whole does ask material			14
whole does ask part			21
whole does ask surface			-38
whole does ask verbish			-9
whole does ask word			42
whole does be area			43
whole does be defect			-25
whole does be finish			-39
whole does be fixture			17
whole does be material			-6
whole does be part			16
whole does be surface			12
whole does be tells			-37
whole does be tool			8
whole does be verbish			-8
whole does bring defect			-44
whole does bring material			35
whole does bring part			36
whole does bring surface			-9
whole does bring tool			12
whole does bring word			-8
whole does call area			13
whole does call defect			-26
whole does call fixture			-23
whole does call material			34
whole does call surface			21
whole does call verbish			-20
whole does change material			43
whole does change surface			-8
whole does check word			-17
whole does clean defect			-12
whole does clean fixture			-20
whole does clean material			-15
whole does clean part			-11
whole does clean surface			9
whole does clean word			-21
whole does close defect			-25
whole does close material			-31
whole does close surface			34
whole does close word			-21
whole does come area			20
whole does come defect			-44
whole does come fixture			-10
whole does come material			-23
whole does come surface			26
whole does come verbish			30
whole does come word			-26
whole does cut area			6
whole does cut fixture			14
whole does cut material			-7
whole does cut part			14
whole does cut size			-9
whole does cut surface			-19
whole does cut verbish			-15
whole does cut word			-16
whole does dig part			-19
whole does do defect			-15
whole does do material			-23
whole does do part			25
whole does do surface			13
whole does do word			-38
whole does dry area			77
whole does dry material			-55
whole does dry word			18
whole does file part			37
whole does file word			-15
whole does fill area			58
whole does fill defect			85
whole does fill fixture			-18
whole does fill material			-6
whole does fill surface			32
whole does fill word			-30
whole does fix defect			-10
whole does fix material			-25
whole does flip defect			-20
whole does flush fixture			8
whole does flush word			-7
whole does fre fixture			-29
whole does fre part			30
whole does fre word			-25
whole does get finish			-31
whole does get fixture			27
whole does get material			16
whole does get part			-9
whole does get surface			50
whole does get tool			-33
whole does get word			-8
whole does glue area			-22
whole does glue defect			13
whole does glue material			-30
whole does glue surface			22
whole does glue word			-51
whole does go area			-23
whole does go defect			-24
whole does go finish			10
whole does go fixture			-17
whole does go part			26
whole does go surface			26
whole does go verbish			-15
whole does go word			23
whole does hang area			-56
whole does hang defect			-7
whole does hang fixture			11
whole does hang part			-12
whole does hang word			-21
whole does has material			50
whole does have defect			6
whole does have fixture			-26
whole does have material			-40
whole does have part			12
whole does have surface			29
whole does have tool			-12
whole does have verbish			-31
whole does have word			-7
whole does hit defect			30
whole does hit surface			43
whole does i'll material			10
whole does i'll word			15
whole does leave material			18
whole does leave part			-6
whole does leave surface			-17
whole does leave verbish			10
whole does leave word			-42
whole does let defect			-8
whole does let fixture			19
whole does let material			18
whole does let surface			-42
whole does let word			-52
whole does look area			-7
whole does look defect			-11
whole does look fixture			17
whole does look part			21
whole does look surface			-9
whole does look word			33
whole does make defect			27
whole does make material			-20
whole does make word			-20
whole does move area			12
whole does move material			-49
whole does move part			-34
whole does move word			25
whole does need area			-8
whole does need defect			26
whole does need fixture			62
whole does need material			12
whole does need part			56
whole does need size			-13
whole does need surface			-29
whole does need verbish			-23
whole does need word			-26
whole does open area			-13
whole does open defect			95
whole does open material			-8
whole does open part			20
whole does open surface			-31
whole does open word			-30
whole does order defect			-13
whole does order part			-30
whole does order verbish			29
whole does order word			-29
whole does paint material			30
whole does patch area			38
whole does patch material			23
whole does patch surface			23
whole does patch word			35
whole does pick word			44
whole does plane fixture			44
whole does plane surface			-8
whole does plane word			-9
whole does pull defect			-41
whole does pull fixture			54
whole does pull material			-47
whole does pull part			-38
whole does pull word			-35
whole does put area			7
whole does put finish			-10
whole does put material			-30
whole does put part			-12
whole does put size			47
whole does put surface			-22
whole does put verbish			17
whole does put word			-20
whole does replace area			-52
whole does replace defect			-27
whole does replace material			16
whole does replace part			-10
whole does replace surface			-19
whole does replace word			-35
whole does reset defect			-36
whole does reset part			-47
whole does reset word			-22
whole does rip defect			-19
whole does rip material			6
whole does run area			15
whole does run defect			7
whole does run fixture			9
whole does run material			-58
whole does run part			19
whole does run surface			10
whole does run verbish			-17
whole does run word			-45
whole does sand area			-7
whole does sand defect			20
whole does sand fixture			47
whole does sand material			13
whole does sand surface			79
whole does sand word			-38
whole does say area			-19
whole does say fixture			-17
whole does say material			-15
whole does say part			-10
whole does say surface			-33
whole does say verbish			-33
whole does say word			-35
whole does seal material			30
whole does seal word			-8
whole does see area			-9
whole does see defect			-11
whole does see fixture			-20
whole does see material			13
whole does see part			-20
whole does see surface			38
whole does see word			-17
whole does send defect			17
whole does send material			42
whole does send surface			-18
whole does send word			-13
whole does set defect			-22
whole does set material			30
whole does set surface			10
whole does shim defect			-43
whole does shim word			31
whole does sister material			32
whole does sister word			-25
whole does skim surface			-21
whole does skim word			-50
whole does snug defect			-8
whole does snug word			14
whole does splice defect			-8
whole does splice word			10
whole does stick word			37
whole does swap area			-48
whole does swap defect			-23
whole does swap fixture			13
whole does swap material			-22
whole does swap size			-18
whole does swap surface			-39
whole does swap verbish			-26
whole does swap word			14
whole does take area			17
whole does take defect			-32
whole does take fixture			8
whole does take surface			-8
whole does take verbish			-13
whole does take word			29
whole does tape defect			21
whole does tape material			11
whole does tape part			-32
whole does tape word			-13
whole does tell material			-32
whole does tell verbish			7
whole does tell word			18
whole does tighten defect			-23
whole does trim defect			-24
whole does turn defect			-15
whole does turn material			-17
whole does turn part			-14
whole does turn word			16
whole does use material			49
whole does walk surface			-12
whole does want area			-42
whole does want defect			-43
whole does want finish			-16
whole does want fixture			59
whole does want material			28
whole does want part			-35
whole does want verbish			14
whole far after 0	38	-9
whole far after 13+	-21	-7
whole far after 2	13
whole far after 3-4	-16
whole far after 5-7	-19
whole far after 8-12	-22
whole far before 0	19	10
whole far before 1	16	8
whole far before 13+	-22	-12	-20
whole far before 2	24	13
whole far before 5-7	9	-9
whole flawed	-8	-8
whole frame copula +1	-19	-8
whole frame copula -1			7
whole frame copula -2	-8	-11	-6
whole frame copula -3	-12
whole frame copula -4	-14	-10	-12
whole frame copula area			32
whole frame copula defect			-17
whole frame copula fixture			28
whole frame copula here-after	20	-8
whole frame copula here-before	11
whole frame copula material			-13
whole frame copula part			13
whole frame copula tells			-29
whole frame copula tool			-21
whole frame copula verbish			-7
whole frame copula word			-21
whole frame imperative +1	-26	46
whole frame imperative -1	71	51	7
whole frame imperative -2		37	17
whole frame imperative -3	-8	-22
whole frame imperative -4	-7	-24	-14
whole frame imperative defect			-12
whole frame imperative fixture			20
whole frame imperative here-after	-40	-12
whole frame imperative here-before	11	36	25
whole frame imperative part			24
whole frame imperative size			39
whole frame imperative tells			32
whole frame imperative verbish			-22
whole frame imperative word			-11
whole frame modal +1	-20	23
whole frame modal -1	41	-12	-9
whole frame modal -2	-10	25
whole frame modal -3	-15	-9	-17
whole frame modal -4	-19	-13	-17
whole frame modal area			-7
whole frame modal finish			7
whole frame modal fixture			19
whole frame modal here-after	14
whole frame modal here-before	37	9	47
whole frame modal part			-14
whole frame modal tells			-32
whole frame modal tool			-25
whole frame modal word			-14
whole frame none +1	-16	-11
whole frame none -1		8	26
whole frame none -2			-10
whole frame none -3	-11
whole frame none -4	-20		-12
whole frame none area			15
whole frame none defect			-11
whole frame none finish			-31
whole frame none here-after	14	-18
whole frame none here-before	14	7	-27
whole frame none material			14
whole frame none part			7
whole frame none surface			14
whole frame none tells			-31
whole frame none word			-16
whole frame owed +1	6
whole frame owed -1			8
whole frame owed -2	-8	-18	21
whole frame owed -3	-8	-16	6
whole frame owed -4		-12	-18
whole frame owed area			19
whole frame owed defect			-26
whole frame owed finish			-33
whole frame owed fixture			21
whole frame owed here-after	13	13
whole frame owed here-before		38	11
whole frame owed material			9
whole frame owed part			11
whole frame owed size			-16
whole frame owed surface			33
whole frame owed tells			-23
whole frame owed tool			-11
whole frame owed verbish			-7
whole frame past +1	-20	-10
whole frame past -1	-12	-17
whole frame past -2			-12
whole frame past -3	-11		-28
whole frame past -4	-14		-23
whole frame past defect			-21
whole frame past finish			-12
whole frame past here-after		8
whole frame past here-before	30	12	-26
whole frame past surface			-16
whole frame past tells			27
whole frame past tool			-21
whole frame past verbish			-27
whole frame past word			-27
whole frame past work			-14
whole frame present +1	-22	-16
whole frame present -1	7	-20	-7
whole frame present -2	7	-12
whole frame present -3	-9		14
whole frame present -4	-13		-15
whole frame present area			-24
whole frame present defect			18
whole frame present fixture			35
whole frame present here-after	18	-10
whole frame present here-before	31		18
whole frame present material			-23
whole frame present part			10
whole frame present size			13
whole frame present surface			8
whole frame present tells			-28
whole heading	-8
whole heading +1	-16	-6
whole heading -1	-14	27
whole heading -2		-15
whole heading -3			9
whole heading -4	-10
whole heading here-after	39	-12
whole heading here-before	40	-7	-30
whole is-flaw	-21	-11
whole kind +1 area	-13
whole kind +1 defect	-15
whole kind +1 finish	-15	-10
whole kind +1 fixture	-9
whole kind +1 material	-11	-7
whole kind +1 part	-17
whole kind +1 size	-9
whole kind +1 surface	-15
whole kind +1 tells	-13
whole kind +1 tool	-12
whole kind +1 verbish	-10
whole kind +1 word	-12
whole kind -1 area		36	32
whole kind -1 defect	-15	-20	-11
whole kind -1 finish		17
whole kind -1 fixture	26
whole kind -1 material		-9	7
whole kind -1 part	14		17
whole kind -1 size	19	-15	21
whole kind -1 surface			7
whole kind -1 tells	-18	-27
whole kind -1 tool	-14	-12	-9
whole kind -1 word		-9	-12
whole kind -1 work	-9	-12
whole kind -2 area	-23	-7	-23
whole kind -2 defect	-8	-8	-16
whole kind -2 finish	-23		-9
whole kind -2 fixture	33		38
whole kind -2 material	-7
whole kind -2 part	8		15
whole kind -2 size	-23	9	24
whole kind -2 surface	-7	9	7
whole kind -2 tells	-17	-13	11
whole kind -2 tool	-9	-12	-11
whole kind -2 verbish		-10
whole kind -2 word	-8		-14
whole kind -2 work	-24	-8	-17
whole kind -3 area		18
whole kind -3 defect	-15
whole kind -3 finish	-13		-28
whole kind -3 fixture	-11		17
whole kind -3 material	-8
whole kind -3 size	-21		-21
whole kind -3 surface			-7
whole kind -3 tells	-7	-7	-27
whole kind -3 tool	-11	-7	-9
whole kind -3 verbish	-12		-16
whole kind -3 word			-8
whole kind -3 work	-12
whole kind -4 area			18
whole kind -4 defect	-9		-14
whole kind -4 finish	-9		-9
whole kind -4 material	-11		-13
whole kind -4 part	-8		-11
whole kind -4 size	-17		-18
whole kind -4 surface	-10
whole kind -4 tells	-9	15	-21
whole kind -4 tool	9	21	-16
whole kind -4 verbish	-11		-17
whole kind -4 word	-7		-11
whole kind -4 work	-8		-25
whole kind area	-8	10	9
whole kind defect		-13	-14
whole kind finish	-7		-7
whole kind fixture	11		13
whole kind here-after area	-16	21
whole kind here-after defect	-9	-14
whole kind here-after finish	-31	-10
whole kind here-after fixture		8
whole kind here-after material	39
whole kind here-after part	-10	9
whole kind here-after size	34
whole kind here-after surface	14
whole kind here-after tells		-11
whole kind here-after tool		-26
whole kind here-after verbish	13
whole kind here-after word		-8
whole kind here-before area	-22	-11	-54
whole kind here-before defect	56	-13	14
whole kind here-before finish	42	-11	9
whole kind here-before fixture	-9	17	-9
whole kind here-before material	7		43
whole kind here-before part	12
whole kind here-before size	22		19
whole kind here-before surface	21	16
whole kind here-before tells		17	-30
whole kind here-before tool	-12		-25
whole kind here-before verbish		-19	-24
whole kind size	11
whole kind tells	-10		-11
whole kind tool	-7		-16
whole kind verbish			-13
whole kind word	-12	-9	-19
whole kind work	-16	-8	-32
whole lead a -1		23
whole lead a -2	-8	-25
whole lead a -3	-24	-14
whole lead a -4	-20
whole lead a here-after	111	-18
whole lead a here-before	-29
whole lead about -3	-15
whole lead about -4	-15
whole lead about here-before	43
whole lead area -1		-16
whole lead area -2		20
whole lead area -3		-8
whole lead area -4		-9
whole lead area here-after		-14
whole lead area here-before	-8
whole lead at -1	-10
whole lead at -2	15
whole lead at -3	-19
whole lead at -4	-26
whole lead at here-after	-27
whole lead at here-before	9
whole lead by -3	-19
whole lead by -4	-8
whole lead by here-after	-24
whole lead by here-before	22
whole lead defect -1	-14
whole lead defect -2	-15
whole lead defect -3	-14
whole lead defect -4	-17
whole lead defect here-before	44
whole lead down -1	-27
whole lead down -2	30
whole lead down here-after	-80
whole lead down here-before	31
whole lead every -1	-32
whole lead every -2	-32
whole lead fixture -1	-34	17
whole lead fixture -2	-28
whole lead fixture -3	-24	-6
whole lead fixture -4	-14
whole lead fixture here-after	-52	-18
whole lead fixture here-before	59	20
whole lead for -1	55
whole lead for -3	-12
whole lead for -4	-15
whole lead for here-before	36
whole lead in -1	26
whole lead in -2	-16
whole lead in -4	-18
whole lead in here-before	25
whole lead mark -1	13
whole lead mark -2	18
whole lead mark -3	-6
whole lead mark -4	-14
whole lead mark here-after	-58
whole lead mark here-before	21
whole lead material -1	21	11
whole lead material -2	-15	-15
whole lead material -3	-9	15
whole lead material -4	-17	-8
whole lead material here-after	25	-19
whole lead number here-after		-7
whole lead number here-before		51
whole lead of -1	75
whole lead of -2	-20
whole lead of -3	-18
whole lead of -4	-16
whole lead of here-after	11
whole lead of here-before	23
whole lead off here-after	-35
whole lead off here-before	24
whole lead on here-before		19
whole lead out -2	-24
whole lead out -4	-20
whole lead out here-after	-30
whole lead out here-before	16
whole lead over -1	18
whole lead over -2	-15
whole lead over -3	24
whole lead over -4	-19
whole lead over here-before	29
whole lead part -1	-21
whole lead part -2	-12
whole lead part -3	-19	-9
whole lead part -4	-32
whole lead part here-after	-61	-14
whole lead part here-before	29
whole lead past -2	13
whole lead quantity -1		37
whole lead quantity -2		36
whole lead quantity -3		-16
whole lead quantity -4	-8	-15
whole lead quantity here-before		10
whole lead role here-after		67
whole lead size -1	-14	-36
whole lead size -2	-12
whole lead size -3	-11
whole lead size -4	-13
whole lead size here-after	-46
whole lead size here-before	26	21
whole lead surface -1		10
whole lead surface -2	-14	28
whole lead surface -3	-31	28
whole lead surface -4	-15
whole lead surface here-after	-24	-16
whole lead surface here-before	14
whole lead tells -1	-12
whole lead tells -4		-6
whole lead tells here-after		-22
whole lead tells here-before	26
whole lead that -1		-18
whole lead that -4		-10
whole lead that here-after		42
whole lead the -1	-23	-17
whole lead the -2		-17
whole lead the -3		-10
whole lead the -4	-16	-15
whole lead the here-after	127	13
whole lead to -1	15
whole lead to -2	-7
whole lead to -3	-20
whole lead to here-before	29
whole lead tool here-before		36
whole lead up -1	7
whole lead up -2	11
whole lead up -3	-20
whole lead up -4	-25
whole lead up here-after	15
whole lead up here-before	36
whole lead verbish -1	17	-16
whole lead verbish -2		-12
whole lead verbish -3	-13	-8
whole lead verbish -4	-15	-9
whole lead verbish here-after	38	-15
whole lead verbish here-before		9
whole lead with -1	-22
whole lead with here-after	86
whole lead with here-before		12
whole lead within -1	-43
whole lead within -2	-16
whole lead within -3	14
whole lead word -1		-14
whole lead word -2		-18
whole lead word -3	-7
whole lead word -4	-7
whole lead word here-after	21
whole lead word here-before	16
whole lemma be object		-15
whole lemma be subject	-6
whole lemma be subject-late	30	25
whole lemma crack object		21
whole lemma cut object		-29
whole lemma drill object	-9
whole lemma drip subject		16
whole lemma dump object		-12
whole lemma find object		27
whole lemma finish object	-29
whole lemma get object	42	-14
whole lemma get subject		-16
whole lemma go object	12
whole lemma go subject	11
whole lemma hang object	7	-36
whole lemma hang subject		-23
whole lemma have object	57	-6
whole lemma have subject-late	14	20
whole lemma hit object		-20
whole lemma hit subject		-7
whole lemma land object		-19
whole lemma land subject		-14
whole lemma leak object		-21
whole lemma leak subject		6
whole lemma leave object	47	-9
whole lemma measure object	47
whole lemma measure subject	-9
whole lemma move object	-19
whole lemma need object		61
whole lemma pull object	-12	12
whole lemma put object	41	26
whole lemma read object	15
whole lemma read subject	6
whole lemma run object	-23
whole lemma run subject	25
whole lemma say object	-33	61
whole lemma say subject	45	-19
whole lemma see object		23
whole lemma sit object	10	-33
whole lemma sit subject	6
whole lemma stain object		26
whole lemma stick object		-22
whole lemma swap object		9
whole lemma take object	-7	-14
whole lemma tell object	-32
whole lemma use object		-49
whole lemma want object	40	-32
whole lemma want subject	-14
whole not-carried	-34
whole not-carried +1 none	-16
whole not-carried +1 own	-15
whole not-carried +1 person	12
whole not-carried +1 pointer	-22
whole not-carried +1 tells	-15
whole not-carried -1 own	-28
whole not-carried -1 person	-43
whole not-carried -2 none	-22
whole not-carried -2 own	-24
whole not-carried -2 person	-19
whole not-carried -2 pointer	-33
whole not-carried -2 tells	-40
whole not-carried -3 none	-16
whole not-carried -3 own	-12
whole not-carried -3 person	-16
whole not-carried -3 pointer	-11
whole not-carried -3 tells	-19
whole not-carried -4 none	-17
whole not-carried -4 own	-15
whole not-carried -4 person	-13
whole not-carried -4 pointer	-25
whole not-carried -4 tells	7
whole not-carried here-after none	24
whole not-carried here-after own	31
whole not-carried here-after pointer	45
whole not-carried here-before person	34
whole not-carried here-before pointer	27
whole not-carried here-before tells	7
whole not-told		-15
whole not-told +1		-8
whole not-told -1		8
whole not-told -2		-6
whole not-told here-after		-14
whole not-told here-before		6
whole number many one			-22
whole number none one			-21
whole number one many			-12
whole opens-with +1	-17	8
whole opens-with -1	13	-16
whole opens-with -2		-9
whole opens-with -3		-20
whole opens-with -4	-20	-11
whole opens-with here-after	33
whole part +1 bare	-16
whole part +1 object	-15
whole part +1 opens	-19
whole part +1 subject	-13
whole part +1 subject-late	-12	8
whole part -1 bare	-9
whole part -1 subject-late	8		14
whole part -2 bare	-16	-10
whole part -2 object		-8
whole part -2 subject-late	12	16	21
whole part -3 bare	-17		-13
whole part -3 object	-12		-10
whole part -3 opens	-7
whole part -3 subject-late			6
whole part -4 bare			-13
whole part -4 object	-14	-6	-17
whole part -4 subject	-8		-7
whole part -4 subject-late		-9
whole part bare	-9	-8	-7
whole part bare area		12	6
whole part bare defect	-15	-13	-27
whole part bare finish	-17		28
whole part bare fixture		6	-11
whole part bare material			16
whole part bare part	-7		21
whole part bare size	12	7	21
whole part bare surface	-9	-14
whole part bare tells	-23		-18
whole part bare tool	46		13
whole part bare verbish		-22	-32
whole part bare word	-9		-16
whole part bare work	-8
whole part here-after bare	14	-17
whole part here-after object	11	-6
whole part here-after subject-late		12
whole part here-before bare	20	21	19
whole part here-before object	31		12
whole part here-before opens	10		-42
whole part here-before subject-late	28	23	-18
whole part object		-11	-13
whole part object area	-15	12	21
whole part object defect		-13	-9
whole part object finish		-7	-16
whole part object fixture	10		16
whole part object part			15
whole part object size	14	-8
whole part object surface	14		-10
whole part object tells	-19	-13	-11
whole part object tool	-17	-7	-15
whole part object verbish			-8
whole part object word	-11	-9	-18
whole part object work	-8	-8	-13
whole part opens finish	-11		-23
whole part opens fixture			23
whole part opens part	7
whole part opens size	7	-11	-19
whole part opens surface	-15		16
whole part opens tells	6		-26
whole part opens tool	-9	-13	-8
whole part opens verbish		-14	-13
whole part opens word			-7
whole part opens work	-22		-25
whole part subject area	-10
whole part subject defect	-25	-6	-34
whole part subject finish	7	25	21
whole part subject fixture	7
whole part subject part	-7		-10
whole part subject size			24
whole part subject tells		-9	-32
whole part subject tool			-21
whole part subject verbish	-11		-13
whole part subject word		-8
whole part subject work	-6	-11
whole part subject-late	10	12	10
whole part subject-late area			-17
whole part subject-late defect	-45	-23	-14
whole part subject-late finish	-17	6	29
whole part subject-late fixture	25	21	31
whole part subject-late material	12
whole part subject-late part	38		21
whole part subject-late size	45	24
whole part subject-late surface	20	43	42
whole part subject-late tells			67
whole part subject-late tool		31	-16
whole part subject-late verbish	-6	-32	-11
whole part subject-late word	-16		-9
whole points both -1			39
whole points both -2			-19
whole points both -3			-11
whole points both -4			59
whole points both here-before			-52
whole points both object			-43
whole points both opens			33
whole points both subject			12
whole points em -1			-33
whole points em -2			9
whole points em -4			-25
whole points em bare			-23
whole points em object			-24
whole points em opens			-31
whole points em subject-late			23
whole points it -4			-16
whole points it here-before			-19
whole points it object			-19
whole points none -2			-10
whole points none -3			-14
whole points none -4			-14
whole points none bare			-13
whole points none here-before			24
whole points none object			-17
whole points none opens			-8
whole points none subject-late			24
whole points one -1			6
whole points one -3			-21
whole points one -4			12
whole points one here-before			65
whole points one object			6
whole points one opens			25
whole points one subject			13
whole points one subject-late			-14
whole points that -1			27
whole points that -2			13
whole points that -4			-37
whole points that bare			-42
whole points that here-before			11
whole points that object			22
whole points that subject			-13
whole points that subject-late			11
whole points them -1			56
whole points them -2			-36
whole points them -3			-21
whole points them -4			-50
whole points them bare			-9
whole points them here-before			-34
whole points them opens			-17
whole points them subject			-9
whole points them subject-late			-26
whole points they -1			-30
whole points they -2			11
whole points they -3			-13
whole points they -4			-7
whole points they bare			-9
whole points they here-before			-51
whole points they object			-12
whole points they opens			-8
whole points they subject			-30
whole points they subject-late			13
whole points this -2			62
whole points this -4			-37
whole points those -1			47
whole points those -2			-32
whole points those -3			26
whole points those -4			-50
whole points those bare			-17
whole points those object			41
whole points those opens			-13
whole points those subject			-9
whole points those subject-late			-28
whole prep about		-15	-28
whole prep across	-12	-20	-6
whole prep after	-20	-16	-24
whole prep along		-24	-22
whole prep around	-25	26	17
whole prep at	-8		-7
whole prep before	-22	-8	-19
whole prep behind		28	55
whole prep below	61		-23
whole prep between	41		-26
whole prep by	-30		-20
whole prep down	10	-12	-23
whole prep for		12	8
whole prep from	-9	-13	-30
whole prep here-after about		-16
whole prep here-after above	11	-15
whole prep here-after along		-8
whole prep here-after at	39
whole prep here-after before	-48
whole prep here-after behind	52	35
whole prep here-after below	58	-9
whole prep here-after by	-23
whole prep here-after down		-7
whole prep here-after for	-44	-20
whole prep here-after from	25	-8
whole prep here-after in	-36	18
whole prep here-after into		-15
whole prep here-after near		-41
whole prep here-after of	48	-7
whole prep here-after off	57	-14
whole prep here-after on	-8	10
whole prep here-after out		-15
whole prep here-after over	-34	28
whole prep here-after past		-8
whole prep here-after through		68
whole prep here-after to	-29	-21
whole prep here-after toward	-54	-38
whole prep here-after under		-36
whole prep here-after up		20
whole prep here-after with	-9	-24
whole prep here-after without		-18
whole prep here-before along		-47
whole prep here-before at	-32	8	77
whole prep here-before behind		41
whole prep here-before by	-62	20	-34
whole prep here-before for	-23	77
whole prep here-before from	-30	-25	-8
whole prep here-before in	-10	6	-45
whole prep here-before of	35	23	7
whole prep here-before off	-11	44
whole prep here-before on		8	-21
whole prep here-before over	44	41
whole prep here-before to	-24	97	11
whole prep here-before under		6
whole prep here-before with	73
whole prep in	-9
whole prep inside	-30	9
whole prep into	-15	-17	-12
whole prep near	-41	31	35
whole prep of	11
whole prep off	24		-10
whole prep on	-11
whole prep other about			-31
whole prep other above	-22	10
whole prep other across	-11	-14	-6
whole prep other after	-10	-11	-17
whole prep other along	-37		-22
whole prep other around	-18		17
whole prep other at	-16		-13
whole prep other before	-10	-6	-19
whole prep other behind	-15	7	55
whole prep other below	24		-23
whole prep other between	26	-8	-26
whole prep other by	-18		-18
whole prep other down		-12	-23
whole prep other for	13		11
whole prep other from	-22	-11	-31
whole prep other into	-10		-14
whole prep other near	-13	25	35
whole prep other off			-8
whole prep other on	-11
whole prep other out	-14	-11	-17
whole prep other over	-27	-7
whole prep other past			-58
whole prep other through		-11	-14
whole prep other to	-7	-10	-25
whole prep other toward	-16	-12	-46
whole prep other under		15	-7
whole prep other up	7
whole prep out	-8	-24	-14
whole prep over	-18	14	-6
whole prep past		-17	-58
whole prep per	-9
whole prep through		39	-14
whole prep to	-14		-22
whole prep toward	-38	-37	-46
whole prep under			-9
whole prep up	28	-7
whole prep with		-9	-6
whole prep without	-9	-18
whole rank after 0		-8
whole rank after 1	-18
whole rank after 2	-17
whole rank after 3	-12
whole rank after 4	-8
whole rank before 0	14	8
whole rank before 3		-6
whole rank before 4	-16	-9	-18
whole says copula		-11	-7
whole says imperative		8	13
whole says none	-9	-9	-8
whole says owed	-10	7	-17
whole says past	-12		-11
whole says present	8	-11
whole sentences -1	-30	-13	-26
whole sentences -1 bare	-22	-9	-18
whole sentences -1 object	-21	-7	-19
whole sentences -1 opens	-19		-12
whole sentences -1 subject	-9		-6
whole sentences -1 subject-late	-8		-12
whole sentences -2	-23	-7	-25
whole sentences -2 bare	-15		-24
whole sentences -2 object	-12		-26
whole sentences -2 opens	-14
whole sentences -2 subject	-14		-13
whole sentences -2 subject-late		-9	22
whole sentences 1	-20	-16
whole sentences 1 bare	-14	-12
whole sentences 1 object	-11	-11
whole sentences 1 opens	-19
whole sentences 1 subject	-17
whole sentences 1 subject-late	-14	-8
whole size 2	-16	-7	-14
whole size 3			-12
whole stands-off-after		-8
whole subject none +1	-16
whole subject none -1	6	11
whole subject none -3	-10
whole subject none -4	-15
whole subject none here-after	11	-13
whole subject none here-before	19	8
whole subject own +1	-18	-10
whole subject own -1		-7
whole subject own -2	-10
whole subject own -3	-8
whole subject own -4	-16	-8
whole subject own here-after	9	-12
whole subject own here-before	12	8
whole subject person +1	20	27
whole subject person -1	-21	-60
whole subject person -2	-25	-9
whole subject person -3	-39	-10
whole subject person -4		7
whole subject person here-after	-31	15
whole subject person here-before	14	-26
whole subject pointer +1	-22	-12
whole subject pointer -1	9	-8
whole subject pointer -2		-23
whole subject pointer -3	-16	-7
whole subject pointer -4	-14	-9
whole subject pointer here-after	13	9
whole subject pointer here-before	35
whole subject tells +1	-15
whole subject tells -1	45
whole subject tells -2	-6
whole subject tells here-after	56	-15
whole subject tells here-before	13	-6
whole told -1		25
whole told -2		15
whole told -3		15
whole told -4		9
whole told defect		-12
whole told finish		9
whole told fixture		19
whole told here-after		14
whole told size		-16
whole told surface		12
whole told tells		23
whole told tool		-17
whole told verbish		-17
whole touches-after	40
whole touches-before	20	10
whole unit area defect	49
whole unit area fixture	-33
whole unit area material	14
whole unit area part	-17
whole unit area surface	34
whole unit area verbish	-14
whole unit current defect	-40
whole unit current part	23
whole unit current surface	-16
whole unit current verbish	-11
whole unit current word	-38
whole unit flow material	-14
whole unit flow part	-19
whole unit flow word	-51
whole unit length area	-9
whole unit length defect	8
whole unit length finish	-9
whole unit length fixture	10
whole unit length tells	-22
whole unit length tool	-12
whole unit length word	-10
whole unit length work	-15
whole unit none area		10
whole unit none defect	-19	-13
whole unit none fixture	26
whole unit none material	-11
whole unit none size	17
whole unit none surface	9
whole unit none tells	15
whole unit none verbish	-6
whole unit none word	-8	-9
whole unit none work		-7
whole unit other defect	-14
whole unit other material	-26
whole unit other part	-22
whole unit other word	-7
whole unit percent defect	-21
whole unit percent finish	17
whole unit percent fixture	-17
whole unit percent material	-39
whole unit percent size	23
whole unit percent surface	19
whole unit percent tells	-60
whole unit percent verbish	-26
whole unit percent word	-26
whole unit pressure area	-26
whole unit pressure defect	-19
whole unit pressure fixture	-37
whole unit pressure part	-13
whole unit pressure size	24
whole unit pressure surface	-22
whole unit pressure word	-31
whole unit slope material	-18
whole unit slope size	7
whole unit slope surface	-24
whole unit temperature area	10
whole unit temperature defect	-20
whole unit temperature material	-20
whole unit temperature part	-12
whole unit temperature size	-25
whole unit temperature word	-13
whole unit voltage defect	-44
whole unit voltage material	6
whole unit voltage part	81
whole unit voltage verbish	-7
whole unit voltage word	-33
whole unit volume material	10
whole unit volume part	44
whole unit volume surface	-15
whole unit volume word	-53
whole use buy	-16	19	-6
whole use have	31
whole use measure		-14	-19
whole use move	-9	-9
whole use need		-8	-10
whole use say		21	26
whole use see	-14	-10	-19
whole use use	-8	-27
whole use work	-8		-18
whole where +1	-18
whole where -2		-8
whole where -3	-11		-8
whole where -4	-14	-8	-17
whole where here-after	11	-7
whole where here-before	17
`;
