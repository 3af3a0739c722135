/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-10
after at area		54
after at defect		-23
after at fixture	-8	-7
after at part	16	31
after at surface	10	37
after at verbish		-29
after at word		11
after behind defect		-22
after behind fixture		-38
after behind word		-14
after by defect		-34
after by fixture	-13	-13
after by part		44
after by word	-15
after down defect		-15
after down word	-10
after end defect		-18
after for defect		-17
after from defect		22
after from part		-16
after from surface	-7	-57
after from word	-7	49
after in area		-15
after in defect		-17
after in fixture		-12
after in material		28
after in part		90
after in surface		16
after in tool		-14
after in verbish		31
after in word	-11
after mark defect		-10
after mark word		-36
after number defect		-6
after number word		-11
after of defect		-31
after of finish	-11
after of material	27
after of surface	25
after off part		83
after off verbish	-10
after off word		-34
after on defect		-19
after on fixture		25
after on material	-9	107
after on part		-96
after on size	-10
after on surface	9	53
after on tells	-7
after on word	-11	-49
after out defect		-10
after out material		27
after out surface		45
after out word		-37
after over defect		-14
after over size	-10
after quantity area		9
after quantity defect		-36
after quantity fixture		23
after quantity material		12
after quantity part		57
after quantity size		51
after quantity surface		-54
after quantity tells		-38
after quantity verbish		37
after term area	7	27
after term defect		-32
after term finish	20	-44
after term fixture		62
after term material	10	-27
after term part	49	51
after term size		8
after term surface	-17	-12
after term verbish	-10	44
after term word		21
after through defect		-16
after to defect		-22
after to part	-12
after up defect		-12
after up word	-6
after with defect		-13
after with word		-7
after word area	-14	51
after word defect	-11	-26
after word finish		23
after word fixture	-25	13
after word material	11	53
after word part	-11	20
after word size	8	7
after word surface	-8	33
after word tells		-20
after word tool		-19
after word verbish	-11	23
article a		-25	-11
article none	-7	-13	-15
article other	-17	-10	-12
article the	17	30	27
behind about +1		-10
behind about -1		-36
behind about -2		-32
behind about here-after		-7
behind about here-before		76
behind above +1	-17
behind above -1	47
behind above -2	-14
behind above here-before	-44
behind across +1	-27
behind across -1	87
behind across -2	-49
behind across -3	-16
behind across -4	-34
behind across here-after	-17
behind across here-before	12
behind after +1	-21
behind after -1	18
behind after -2	-28
behind after here-before	59
behind at +1	-19	-28
behind at -1	-19	11
behind at -2	25	-29
behind at -3	-7	-21
behind at -4	-17	-24
behind at here-before	33	54
behind before here-after	-17
behind behind +1		-22
behind behind -1		28
behind behind -2		-29
behind behind -3		-18
behind behind here-after	-7
behind behind here-before		8
behind below +1	-18
behind below -1	-17
behind below -2	29
behind below here-before	19
behind by +1	-20	-17
behind by -1	-16	-26
behind by -2	-11	-66
behind by -3	-12
behind by -4	13	33
behind by here-before	43	62
behind centers -1	-63
behind deep +1	-18
behind deep -1	12
behind deep -2	-14
behind deep -3	-35
behind deep -4	-20
behind deep here-after	-12
behind deep here-before	59
behind down +1	-12	-28
behind down -1	15	-52
behind down -2	-36	18
behind down -3	-28	-22
behind down here-after	-8	40
behind down here-before	13	32
behind end +1	-22	-9
behind end -1	9	18
behind end -2	-13	-17
behind end -4	-11	-22
behind end here-after		-17
behind end here-before	35	28
behind for +1	-24	-31
behind for -1	50	91
behind for -2	-38	57
behind for -3	36	-41
behind for -4	-33	-20
behind for here-after	-21	-86
behind from +1	-22	-36
behind from -1	31	-33
behind from -2	-15	-32
behind from -3	-37
behind from -4		14
behind from here-after	-12	10
behind from here-before	49	54
behind high +1	-27
behind high -1	11
behind high -2	30
behind high -3	-29
behind high -4	-14
behind high here-after	-13
behind high here-before	36
behind in +1	-15	24
behind in -1	8
behind in -2	15	-23
behind in -3		-27
behind in -4	-22	-34
behind in here-after	-7	10
behind in here-before	10	26
behind into here-after		-17
behind into here-before		-27
behind long +1	-19
behind long -1	22
behind long -2	-22
behind long -4	-28
behind long here-after	-10
behind long here-before	41
behind low +1	-12
behind low -1	17
behind low -2	-20
behind low -3	-14
behind low -4	-18
behind low here-before	43
behind mark +1	-11	-22
behind mark -1		-49
behind mark -2		66
behind mark -3		-9
behind mark -4		-15
behind mark here-after	-9	-13
behind mark here-before	51	13
behind near here-after		-14
behind near here-before		46
behind number +1		-33
behind number -3		-22
behind number -4		-39
behind number here-before		78
behind of +1	-33	-54
behind of -1	17	24
behind of -2	-29	34
behind of -3	-40
behind of -4	-12	-6
behind of here-after	29	-7
behind of here-before	38
behind off +1	-23	-25
behind off -1		-21
behind off -2		-31
behind off -3	-8	-47
behind off -4	-11	41
behind off here-after	-9	54
behind off here-before	51	-16
behind on +1		-31
behind on -1	23	-13
behind on -2	-10	8
behind on -3	23	-28
behind on -4	-16	-16
behind on here-after	-13	17
behind on here-before	-12	37
behind out +1	-18
behind out -1	-20	-41
behind out -2	13	-45
behind out -3		47
behind out -4	-29	-18
behind out here-after	-9	10
behind out here-before	57	49
behind over +1	-21	-7
behind over -1	6	-31
behind over -2		-42
behind over -3		-14
behind over -4	-21	-7
behind over here-after	-13	47
behind over here-before	42	39
behind quantity -1	19
behind quantity -2	-34	13
behind quantity -3	-7	-25
behind quantity -4	-7	-21
behind quantity here-after	-7
behind quantity here-before	26	17
behind short +1	-12	-52
behind short -1	34	-38
behind short -2	-63	-30
behind short -3	-22	68
behind short -4	19
behind short here-after	7	14
behind short here-before	31	24
behind tall +1	-26
behind tall -1	-46
behind tall -2	54
behind tall -4	29
behind tall here-before	24
behind term +1	-20	-27
behind term -2	25
behind term -3	-24	-15
behind term -4	-33	-23
behind term here-after		25
behind term here-before	34	43
behind thick +1	-23
behind thick here-before	-47
behind through +1		-11
behind through -2		-28
behind through -3		-16
behind through -4		-23
behind through here-after		36
behind through here-before		21
behind time -2		-20
behind time -3		-25
behind time here-after		-26
behind to +1	-26	-29
behind to -1	17	-12
behind to -2		-14
behind to -3	-9	-27
behind to -4		-9
behind to here-after	-16
behind to here-before	24	79
behind toward -1	-16
behind toward -2	66
behind toward here-after	-18
behind under +1	-21	30
behind under -1	-10
behind under -2	-23
behind under here-after		-23
behind under here-before	55	16
behind up +1	-22	-16
behind up -1	13	-30
behind up -2	65	-34
behind up -3	-26	-10
behind up -4	-32	-19
behind up here-after	-7	11
behind up here-before	-9	61
behind wide +1	-33
behind wide -1	-11
behind wide -2	11
behind wide -3	-12
behind wide -4	-17
behind wide here-before	48
behind with +1	-9	-12
behind with -1	-50	35
behind with -2		-27
behind with -3	37	-37
behind with -4	-14	-16
behind with here-after	-10	-15
behind with here-before	45	35
behind word +1	-13	-13
behind word -1	-6	-10
behind word -2	11	8
behind word -3		-12
behind word -4	-27	-10
behind word here-after		18
behind word here-before	32	11
between 	24	23
between about	-38
between and	-94
between are	20	59
between at	22
between be	8	7
between by	-33
between come		52
between come out	25
between cut	61
between get		66
between get a		45
between has a		20
between have		34
between have a		16
between is	44	22
between just		11
between measure	20
between of	42
between on	-42
between only	51
between over	7
between read	16
between run	49
between say	-32
between sit	30
between still		17
between the		-33
between to	58
between want	20
between were		36
carried	41
carried -1 none	19
carried -1 person	74
carried -1 pointer	57
carried -1 tells	80
carried -2 none	35
carried -2 pointer	68
carried -2 tells	88
carried -3 none	46
carried -3 own	13
carried -3 pointer	37
carried -4 none	12
carried -4 pointer	53
carried here-before none	25
carried here-before own	39
carried here-before pointer	35
carried here-before tells	14
counted bare		21	19
counted count	21	14	23
counted current	-22	-17	-9
counted length	-14		-32
counted pack	-8	-12	-12
counted percent		12
counted power	-13
counted pressure	-13	-36	-14
counted slope	-8
counted time	7	-31	-22
counted voltage		-29
counted volume	-13	14	-29
counted weight		-14	-29
does ask fixture			34
does ask material			-22
does ask part			27
does ask surface			-69
does ask verbish			-9
does ask word			7
does be area			-13
does be defect			-10
does be finish			-37
does be fixture			35
does be material			-9
does be size			-34
does be surface			14
does be tells			-32
does be tool			31
does be verbish			23
does blow part			68
does blow word			-44
does bring defect			-15
does bring material			-23
does bring part			-39
does bring surface			-28
does bring word			28
does call area			-18
does call defect			-36
does call fixture			-36
does call material			56
does call part			11
does call surface			8
does call word			-19
does change area			46
does change defect			-12
does change part			24
does change surface			-75
does change word			18
does check word			-27
does clean defect			-21
does clean fixture			-13
does clean material			-11
does clean part			57
does clean surface			-15
does clean word			7
does close area			16
does close defect			-24
does close material			-48
does close surface			58
does close word			-10
does come area			17
does come defect			-25
does come fixture			-32
does come material			-22
does come part			48
does come surface			8
does come verbish			59
does cut defect			18
does cut fixture			17
does cut material			29
does cut part			-30
does cut size			-39
does cut verbish			-23
does cut word			-17
does dig part			40
does dig word			42
does do defect			-20
does do fixture			112
does do material			-87
does do part			29
does do surface			8
does drill defect			41
does dry area			22
does dry fixture			93
does dry material			-106
does dry word			-40
does file part			77
does file word			-9
does fill area			-23
does fill defect			76
does fill fixture			-35
does fill material			36
does fill surface			23
does fill word			-50
does finish word			-50
does fix defect			-12
does fix material			-28
does fix word			-14
does flip defect			-13
does flip word			-11
does flush fixture			20
does flush part			-20
does flush word			-23
does fre fixture			30
does get area			-38
does get defect			25
does get finish			-37
does get fixture			41
does get part			58
does get tool			-33
does get verbish			-12
does get word			-30
does glue area			-16
does glue surface			-28
does glue word			-42
does go area			17
does go finish			-19
does go material			41
does go part			36
does go surface			-38
does go verbish			-65
does hang area			-30
does hang defect			-38
does hang fixture			21
does hang material			38
does hang part			76
does hang word			-37
does has material			83
does have area			-18
does have defect			30
does have fixture			-7
does have material			-7
does have part			31
does have tool			26
does have verbish			-11
does have word			-26
does hit defect			-29
does hit surface			102
does i'll material			-42
does leave part			-30
does leave surface			27
does leave verbish			16
does leave word			18
does let fixture			87
does let material			20
does let surface			-29
does let word			15
does look area			22
does look defect			-35
does look fixture			49
does look part			27
does look word			-46
does make defect			51
does make material			-26
does measure word			-22
does move area			11
does move material			-31
does move part			20
does move surface			-40
does move word			17
does need area			-9
does need defect			-17
does need part			67
does need verbish			-34
does need word			-12
does open area			18
does open defect			45
does open fixture			37
does open material			-12
does open part			11
does open word			-45
does order part			18
does order verbish			56
does order word			-48
does paint material			31
does patch area			63
does patch material			72
does patch surface			-15
does patch word			37
does pick word			53
does plane defect			-16
does plane fixture			45
does plane surface			-42
does plane word			-40
does plug word			68
does pull defect			-21
does pull fixture			-24
does pull part			41
does pull surface			-20
does pull word			-34
does put area			-20
does put defect			-14
does put finish			-22
does put fixture			13
does put material			15
does put part			57
does put size			74
does put surface			-27
does put verbish			-25
does put word			-56
does replace area			-46
does replace defect			-26
does replace material			-9
does replace part			11
does replace surface			16
does replace word			7
does reset defect			-18
does reset material			73
does reset part			6
does reset word			-31
does rip defect			38
does rip material			-53
does run defect			53
does run fixture			45
does run material			-94
does run part			23
does run surface			-17
does run verbish			-43
does run word			-31
does sand area			11
does sand defect			-12
does sand fixture			53
does sand material			-29
does sand surface			54
does sand verbish			6
does sand word			-76
does say area			32
does say defect			-21
does say fixture			39
does say material			-21
does say part			38
does say verbish			-55
does say word			-8
does scrape word			-23
does screw fixture			7
does screw word			-25
does scribe word			-42
does seal defect			-11
does seal material			-20
does seal surface			79
does seal word			-59
does see area			-9
does see defect			-21
does see fixture			-41
does see part			-21
does see surface			71
does see verbish			15
does see word			22
does send defect			28
does send material			27
does send surface			-33
does set defect			-24
does set surface			57
does set word			-7
does shim defect			-15
does shim material			-9
does shim word			16
does sister material			142
does sister word			-55
does sit word			-44
does skim surface			47
does skim word			-36
does snug defect			-13
does snug word			25
does splice defect			-29
does splice material			25
does splice word			20
does stick word			-15
does swap area			-26
does swap defect			-28
does swap fixture			-56
does swap material			11
does swap part			77
does swap size			-19
does swap surface			-51
does swap verbish			46
does swap word			14
does take area			-16
does take defect			-27
does take fixture			28
does take material			12
does take part			-18
does take surface			-47
does take verbish			-27
does take word			78
does tape defect			-24
does tape material			17
does tape part			-61
does tape word			44
does tell material			-66
does tell verbish			68
does tell word			-23
does think word			57
does tighten defect			-29
does trim defect			-23
does trim material			28
does trim word			-15
does turn defect			-23
does turn material			28
does turn part			12
does use material			-30
does walk surface			-18
does want area			-15
does want defect			-39
does want finish			-15
does want material			45
does want word			-28
far after 1	-14	30
far after 13+	-19	-13
far after 2	-10
far after 3-4	-12
far after 5-7	-10	-9
far after 8-12	-16
far before 0	24	24	-18
far before 1	16	19	-17
far before 13+	-23	-28
far before 2	25	26	-13
far before 3-4	22	14
far before 5-7	14		7
far before 8-12			10
figure-between	-9
flawed	15		46
frame copula +1	-16
frame copula -2	-11
frame copula -3		-11
frame copula -4	-16	-20
frame copula defect			-7
frame copula finish			-54
frame copula fixture			25
frame copula here-before	36	30
frame copula material			20
frame copula part			34
frame copula size			-51
frame copula surface			20
frame copula tells			-43
frame copula tool			-18
frame copula verbish			12
frame copula word			-37
frame imperative +1	-18
frame imperative -2	-10	13	9
frame imperative -3		-28	18
frame imperative -4		-37	-21
frame imperative area			24
frame imperative defect			-11
frame imperative finish			-32
frame imperative fixture			38
frame imperative here-after		17
frame imperative here-before	24	26	-10
frame imperative part			27
frame imperative size			12
frame imperative tells			-56
frame imperative tool			-27
frame imperative verbish			-18
frame imperative word			-13
frame modal +1	-28	7
frame modal -1	34	-24	-9
frame modal -2	13	26	24
frame modal -3	-38		12
frame modal -4	30	-21	-17
frame modal area			-8
frame modal defect			-15
frame modal finish			-26
frame modal fixture			21
frame modal here-after	-27	8
frame modal here-before	-13		-22
frame modal material			-9
frame modal part			41
frame modal size			33
frame modal surface			18
frame modal tells			-39
frame modal verbish			-18
frame modal word			-16
frame none +1	-23	-25
frame none -1	14	8	36
frame none -3	-11	-11	-15
frame none -4	-22	-13	-18
frame none area			40
frame none defect			-22
frame none finish			26
frame none fixture			-8
frame none here-after		8
frame none here-before	38	31	-55
frame none size			-6
frame none verbish			-21
frame owed +1	-28	-13
frame owed -1		-52	17
frame owed -2		-42	16
frame owed -3	-12	-11
frame owed -4			-35
frame owed area			9
frame owed defect			-22
frame owed finish			-38
frame owed fixture			16
frame owed here-after	-22	45
frame owed here-before	46	56	-12
frame owed material			16
frame owed part			12
frame owed surface			7
frame owed tells			-42
frame owed tool			-11
frame owed verbish			11
frame owed word			-13
frame past +1	-19	-22
frame past -1		8	39
frame past -2	7	-14
frame past -3		-9	-20
frame past -4	-32	-12	-35
frame past area			-16
frame past defect			-15
frame past fixture			16
frame past here-after		25
frame past here-before	46	13
frame past material			23
frame past part			40
frame past size			-13
frame past surface			-15
frame past tool			-9
frame past verbish			-18
frame past word			-14
frame past work			-19
frame present +1	-25	-15
frame present -1		7
frame present -2		-10
frame present -3	13
frame present -4	-17	-11
frame present defect			-9
frame present finish			-8
frame present fixture			47
frame present here-after	-13
frame present here-before	33	30	17
frame present part			-10
frame present size			-7
frame present word			-16
heading	-12		-9
heading +1	-22	-15
heading -1	-22		-28
heading -2	-11	17
heading -3		30	-13
heading -4	-7	9
heading here-after		-39
heading here-before		11	-37
join	-11	-11	-11
join +1	-9		-10
join +1 area	-7
join +1 fixture			-15
join +1 part	-7
join +1 size			13
join +1 surface			6
join +1 tells			-15
join +1 tool			-16
join +1 word			-11
join +1 work			-11
join -1 area			6
join -1 defect	-9		-9
join -1 finish			-15
join -1 fixture	10		20
join -1 part	8		9
join -1 tells	-8		-10
join -1 verbish	-7
join -1 work	-7
join -2	-8		-6
join -2 area			-7
join -2 finish	-7
join -2 material			-6
join -2 size	-12		-8
join -2 tool	-7		-7
join -2 work	-12		-6
join -3	-14		-11
join -3 area			-7
join -3 defect	-7		-8
join -3 finish	-7		-6
join -3 material	-7		-7
join -3 part	-7		-8
join -3 size	-12		-14
join -3 tells			-8
join -3 verbish	-7
join -3 word	-8
join -3 work	-7		-15
join area	-7
join area+area		-13	-21
join area+finish		14	9
join area+fixture			-8
join area+material			10
join area+size			16
join area+surface		11
join area+tells		45	27
join area+tool		-8	-9
join area+verbish		-6
join defect	-7
join defect+word		-6
join finish	-7		-10
join finish+defect	-6
join finish+finish			-11
join finish+fixture		8	-7
join finish+part	8
join finish+size	-12
join finish+tells	-9
join finish+tool	-12
join fixture	7
join fixture+area		30
join fixture+defect		-7
join fixture+finish	-8	26	-11
join fixture+fixture	17	20	14
join fixture+material	-8
join fixture+part			7
join fixture+size	18	17	9
join fixture+tells	14	22
join fixture+tool		-26	-13
join fixture+verbish		-10
join fixture+work	-11		-13
join heading	-7
join leads 	6
join leads about		-8
join leads about quantity across	-19
join leads along	-6	-16	-10
join leads around		16	8
join leads at		9
join leads at quantity to	-8
join leads at quantity word		-7
join leads at term verb		-6
join leads at verb word		14
join leads at word		11
join leads at word verb		-10
join leads at word word	8	-9
join leads before		-7
join leads before word verb	22	10	42
join leads behind	24
join leads behind word word	15	24	11
join leads between	18
join leads by		11	16
join leads by term	8
join leads by term quantity		20
join leads down	9		-6
join leads down word		-34
join leads for		11
join leads for term		-11
join leads for word		19
join leads for word term	-9	-14	-10
join leads from	-10
join leads from term term			7
join leads in	7
join leads in term			-12
join leads in term of		-6
join leads in term quantity	-7
join leads in term term		12	28
join leads in verb behind		6
join leads in word	11		7
join leads into	-10		-12
join leads mark			-8
join leads near		34	11
join leads next to		22
join leads number			18
join leads number verb		-12
join leads number word word		16
join leads of quantity	-26
join leads of quantity word	-9
join leads of term	-15		-9
join leads of term term	-12
join leads of term verb	-9	6
join leads of term word	-9	-6
join leads of word		-13
join leads of word quantity	-9
join leads of word verb		-19	-6
join leads of word word		-8
join leads off term word		20	38
join leads on in		7
join leads on quantity		9	10
join leads on term term	-9	-7	10
join leads on term verb		16
join leads on term word	-6		16
join leads on verb verb	-14
join leads on word term		-11	-11
join leads on word word	-19	-8	-9
join leads out	6
join leads out of		-9
join leads out on		-8
join leads over	8	7	7
join leads over term word			6
join leads over to	9	-6
join leads quantity at			-9
join leads quantity by quantity			9
join leads quantity from		-9
join leads quantity of		-22
join leads quantity of quantity			-9
join leads quantity of word		14	7
join leads quantity off			-7
join leads quantity on		-8
join leads quantity term word		22	11
join leads quantity verb		-6
join leads quantity verb word	-10	-29	-16
join leads quantity word quantity		8
join leads quantity word verb		33
join leads quantity word word		-10	-7
join leads term			-7
join leads term at	6
join leads term by	-16	-17
join leads term on		29
join leads term over	-10	-7
join leads term quantity at		-11
join leads term term term		-17
join leads term term verb		-9
join leads term term word		-11
join leads term verb			13
join leads term verb by		8
join leads term verb in		16
join leads term verb quantity		7
join leads term verb word	10
join leads term word	7	-9	-10
join leads term word verb	9	-14	-7
join leads term word word		-7
join leads time		36	17
join leads time before word		-9
join leads to			-9
join leads to term word		-7	6
join leads to verb	10		-8
join leads to verb quantity		-29	-9
join leads under		11
join leads under term word	15
join leads under word word		-18	-7
join leads up in			9
join leads verb at			9
join leads verb at quantity		-7
join leads verb behind	-7	7
join leads verb by		-8	7
join leads verb by quantity		-7
join leads verb for	-7	-11
join leads verb in		8	8
join leads verb of		8
join leads verb off		15
join leads verb on		-16
join leads verb on word		7
join leads verb out		-13
join leads verb out quantity			-18
join leads verb quantity		-11	13
join leads verb quantity by	-7
join leads verb quantity of		-16	-9
join leads verb quantity on		8	-14
join leads verb quantity term		34
join leads verb quantity to	-10
join leads verb quantity word	16	8
join leads verb term in		-8
join leads verb term on		-14
join leads verb term verb		16
join leads verb term word	8
join leads verb to		-7	35
join leads verb to verb			7
join leads verb under		41
join leads verb verb down	-11	-10
join leads verb verb from			14
join leads verb verb in			40
join leads verb verb out			-10
join leads verb verb term		-18	14
join leads verb verb word		-11
join leads verb with		7	22
join leads verb word			-7
join leads verb word in			-7
join leads verb word on		-8
join leads verb word term	-8	13
join leads verb word verb		-10
join leads verb word with		-6
join leads verb word word		-8
join leads with quantity		-8
join leads with term word			6
join leads with verb word		8
join leads word at			-21
join leads word in		-6
join leads word in verb	-11
join leads word number word			-11
join leads word of	12	-8
join leads word on	8		-9
join leads word on quantity			-7
join leads word quantity	-8		-13
join leads word quantity of		-9	17
join leads word quantity on		-18
join leads word quantity word	11	-7	-8
join leads word term	10
join leads word term at	10	24
join leads word term by	-10		-7
join leads word term of		-10
join leads word term quantity	-7	-9
join leads word term verb	-8	8
join leads word to	-10
join leads word to verb	12
join leads word up word	-13	-17
join leads word verb	-8
join leads word verb about		9
join leads word verb at		-12
join leads word verb from	-8		-16
join leads word verb in		-9	-12
join leads word verb quantity		-7	-9
join leads word verb term		-8
join leads word verb up		16	-10
join leads word verb word		-9	9
join leads word with			-8
join leads word word at			8
join leads word word in	-6
join leads word word quantity	-11	-10	-8
join leads word word term		-13
join leads word word to		-8	19
join leads word word verb		-15
join leads word word word		8
join links 	13	-8	-7
join links about quantity across	-20
join links along		-29	-30
join links around		23	10
join links at	10	16	9
join links at quantity	10		11
join links at quantity off	24
join links at quantity to	-33
join links at quantity word		-16
join links at term verb	33	-9	39
join links at term word	59		30
join links at verb word		17
join links at word	47	9
join links at word term	-7	-14	12
join links at word verb	22	-16
join links at word word	6	-9	40
join links before word verb	12		14
join links behind	22		44
join links behind term word	7	-6
join links behind word number		-7
join links behind word word	20	35	10
join links between	15
join links by		16	42
join links by term	9		12
join links by term quantity		7
join links by term verb	13		17
join links by term word	73		7
join links down	31		-10
join links down word		-11
join links for	-7	22
join links for quantity	-15
join links for term		-10
join links for term word			-16
join links for word		20
join links for word term		-15	-13
join links from			-7
join links in	13	19	29
join links in about quantity	-24
join links in quantity		7	17
join links in term		16	26
join links in term quantity	14
join links in term term		10	64
join links in term verb	34	-8	16
join links in term word	29		-8
join links in verb behind		16
join links in word	23		11
join links in word term	12	-6
join links in word verb	-17	-11
join links in word word		-15	-11
join links into			-11
join links mark	13		-18
join links near	10	56	75
join links next to		53
join links number			40
join links number word word		11
join links of	28	27	28
join links of quantity	-19		35
join links of quantity word	-17	-7
join links of term	-11		-11
join links of term term	-13
join links of term verb	-45	10	36
join links of term word	-30	-11	-20
join links of verb word		-9
join links of word verb		-18	-8
join links of word word	50	-25
join links off			8
join links off term word			10
join links on	6	11	26
join links on in		28	-7
join links on quantity		11	28
join links on term	-33	-8	-12
join links on term term		-10	40
join links on term verb	20	17	-14
join links on term word	-28	17	40
join links on verb verb	-24
join links on verb word	-6
join links on word		-10	-10
join links on word quantity			-21
join links on word term		-11	-22
join links on word verb	-11
join links on word word	-26		-19
join links out of		-12
join links out of word		-12
join links out on		-10
join links over	15	24	14
join links over term word		-7	44
join links over to		-7
join links quantity			8
join links quantity at	33	-20	-21
join links quantity by quantity	-23	-30	-43
join links quantity from	-42	-33	-7
join links quantity from term	-19	-18
join links quantity in	-12		-7
join links quantity mark		-12
join links quantity of	8	-11
join links quantity of quantity			-11
join links quantity of term	16
join links quantity of word		15	7
join links quantity on	30	-15
join links quantity on word	22
join links quantity over	15
join links quantity term to	-16
join links quantity term word	-13	20	12
join links quantity to	-10	-23
join links quantity toward		-10
join links quantity verb quantity	19	9
join links quantity verb word	-49	-14	-26
join links quantity word at	-21	-6
join links quantity word quantity	-15		-8
join links quantity word to	-17
join links quantity word verb		-12
join links quantity word word	-17	-10	-12
join links term at	28	-9	12
join links term by	-8	-21	-6
join links term in		18	19
join links term on			-10
join links term over	-23	-12
join links term quantity at	-24
join links term term	-13	-6
join links term term term		-9
join links term term verb	-9	-6
join links term term word		-14
join links term verb	-10
join links term verb by		7
join links term verb in		8
join links term verb quantity	-12
join links term verb term		-8
join links term verb word	11		-18
join links term word	19	-13	-26
join links term word in		33
join links term word verb	44	-9	-10
join links term word word			-14
join links through	8
join links time	13	22
join links time before word		-11
join links to		9
join links to term word	24	-16	13
join links to verb			-9
join links to verb quantity		-14	-7
join links under	-11	32	42
join links under term word	51
join links under word word	17	-17	-26
join links up in	-8	17	27
join links verb	11	-8
join links verb along	-31
join links verb at		-10	63
join links verb at quantity		-18	-11
join links verb behind	-19	-35	-46
join links verb by	14	-24	81
join links verb by quantity		-10
join links verb for	-21	-14
join links verb from		-11
join links verb in		-10	-14
join links verb mark		27
join links verb of	-10	18	-10
join links verb off		11
join links verb on	13		9
join links verb on word	10	-10	-7
join links verb out	24	-21
join links verb out quantity	-28	-25	-41
join links verb quantity	28	-8	20
join links verb quantity at	-12	-18	-23
join links verb quantity from	69	-16
join links verb quantity in	10	-8
join links verb quantity of	-15
join links verb quantity off	54
join links verb quantity on	14	18	-39
join links verb quantity term	-6		-12
join links verb quantity to	-23
join links verb quantity up	-15
join links verb quantity verb	25	-8
join links verb quantity word	11	10
join links verb term	25		6
join links verb term at		-16
join links verb term from		-16
join links verb term in		-15	-18
join links verb term of			11
join links verb term on		-7
join links verb term to	12	-14
join links verb term word	-9	-20	-17
join links verb time			-7
join links verb to	7		14
join links verb under		15
join links verb up word			33
join links verb verb	-7		12
join links verb verb at		-18
join links verb verb by		-11	-21
join links verb verb down	-38	-33
join links verb verb from		-9
join links verb verb in	7	25	31
join links verb verb on	-39	-14
join links verb verb out	-27	-8	-20
join links verb verb quantity	6		-16
join links verb verb term		-15
join links verb verb verb	6		18
join links verb verb with	-6	-13	-10
join links verb verb word	28
join links verb with		-13	21
join links verb word	-15	-9	-14
join links verb word in		-17	-35
join links verb word on		-8	23
join links verb word quantity	29	16	28
join links verb word term	21
join links verb word up			-12
join links verb word verb	-36	-23
join links verb word with		-10	-8
join links verb word word	-27	-14
join links with	12	-7	7
join links with quantity	25	-12
join links with term word			21
join links with verb word		23
join links word		-6
join links word at		-9	-8
join links word at quantity	12
join links word down		-6
join links word in		-9	-11
join links word in at		-29
join links word in term		-7
join links word in verb	-27
join links word number word			-16
join links word on		-7	-15
join links word on quantity			-17
join links word on term		-7	9
join links word quantity			-10
join links word quantity at	21	-6
join links word quantity from	16
join links word quantity of		-15	15
join links word quantity off	-35
join links word quantity on		-15
join links word quantity term	-31	-7	15
join links word quantity verb	11
join links word quantity word		-18	-6
join links word term	29		-9
join links word term at	20	32
join links word term by	-18	-16	-29
join links word term in		-12
join links word term of		-13
join links word term on		-7
join links word term quantity	-23		-6
join links word term term		-8
join links word term verb	-20		-13
join links word term with			-10
join links word term word	12	-11
join links word to	-36
join links word to verb	43	9
join links word up word	-26	-35
join links word verb			10
join links word verb about	-19	11
join links word verb at		-26	7
join links word verb behind		44
join links word verb from	-7	21	-28
join links word verb in	10	-14	-36
join links word verb on	14		11
join links word verb over	-14
join links word verb quantity	48		-21
join links word verb to	15	-14
join links word verb up	-9	21
join links word verb verb	-15		6
join links word verb word	-12		-16
join links word with	-6		-13
join links word word		-6
join links word word at			11
join links word word by	8
join links word word in			-21
join links word word mark	-25
join links word word quantity	-39	-15	-9
join links word word term	-26	-13
join links word word to		-14	13
join links word word verb	8	-20
join links word word word		14	6
join material		-7
join material+defect	9
join material+finish	8	-8	-10
join material+fixture		18	18
join material+material			10
join material+part			12
join material+size		-15	-7
join material+tells		-12	-12
join material+verbish		-12	-7
join material+word		-13	-13
join material+work			-8
join part+area		-7	-9
join part+defect		-6	-13
join part+finish		-12
join part+fixture		12	21
join part+material	11		-6
join part+size	10	10
join part+surface		8	8
join part+tells		-23	-17
join part+work			-8
join same-after	20	-6	14
join same-after area		10	16
join same-after defect	20	-9
join same-after finish	-9
join same-after fixture	9	12	27
join same-after material	15		7
join same-after part	13		18
join same-after size	23
join same-after surface	17		7
join same-after tells	-12		29
join same-after verbish		-7
join same-after word	-6
join same-before size	10
join same-before tells	-10		-6
join same-before work		-6
join size			-7
join size 1			8
join size 2	-10	-15	-24
join size 3			-13
join size+defect	-11
join size+finish	-16		-13
join size+fixture	16		8
join size+material		-11
join size+part		7	7
join size+size			27
join size+surface			-10
join size+tool	-8		7
join size+verbish	9	-10
join size+word	-8		-7
join sizes 1+1		6	18
join sizes 1+2	-8	-9	-14
join sizes 2+1		-14	-21
join sizes 2+2	-11
join sizes 2+3			-14
join sizes 3+2			-9
join sizes 3+3	-10	-17	-23
join surface+area		16	22
join surface+defect	10	-9
join surface+finish			21
join surface+fixture	6
join surface+part		12	7
join surface+size	-6
join surface+surface		10
join surface+tells		-6
join surface+tool			-6
join surface+verbish	-7	13
join surface+work		-11	-9
join tells	-6		-17
join tells+finish	-17
join tells+fixture	15	14
join tells+material			-7
join tells+part	-8	-11	-12
join tells+surface			-6
join tells+tells	-6		-20
join tells+word		-9
join tool	-9	-10
join tool+area		-9
join tool+defect	-8	-7
join tool+finish	-10		26
join tool+fixture		-22	-11
join tool+material			6
join tool+size			7
join tool+surface	-8
join tool+tool			-7
join tool+word		-6
join verbish	-10	-8	-13
join verbish+area		-6	11
join verbish+finish	-8	-6	-9
join verbish+size	-9	-7
join verbish+surface		9
join verbish+tells	-7	-13	-6
join verbish+tool			-10
join verbish+verbish		-12	-7
join verbish+word		-6	-8
join word			-9
join word+finish			-10
join word+tells	-11	-7
join work	-6		-19
join work+fixture	-11		-8
join work+surface	9
join work+word		-7
kind +1 area	-17	-14
kind +1 defect	-11	-9
kind +1 finish	-10	-16
kind +1 fixture	-15
kind +1 material	-16	-9
kind +1 part	-26
kind +1 size	-12
kind +1 surface	-17	-10
kind +1 tells	-10	-16
kind +1 tool	-7	-19
kind +1 verbish	-12	-25
kind +1 word	-10	-13
kind +1 work	-8
kind -1 area	-28	18
kind -1 defect	-22	-31	-18
kind -1 finish	-28	-22	-33
kind -1 fixture	25	36	46
kind -1 material	37		15
kind -1 part	16	7	66
kind -1 size	13	-8	8
kind -1 surface		7	8
kind -1 tells	-23	-54	-13
kind -1 tool	-12	-11	12
kind -1 verbish	-14	-8
kind -1 word	-9	-9	-8
kind -1 work	19	-24
kind -2 area	-24		12
kind -2 defect	-17	-16	-14
kind -2 finish	-36	-41	-18
kind -2 fixture	41	20	32
kind -2 material	10	-11	14
kind -2 part			7
kind -2 size	14
kind -2 surface		24	-7
kind -2 tells	-26	15	-53
kind -2 tool	-22	-41	-50
kind -2 verbish	-9	-19	-7
kind -2 word	-7	-7
kind -2 work	-28	-20	-23
kind -3 area	13	7	7
kind -3 defect	-10	-10	-8
kind -3 finish	-20	-12	-21
kind -3 fixture		30	14
kind -3 material		-10
kind -3 part	13	-9	19
kind -3 size	-45	-25	-64
kind -3 surface		-9	16
kind -3 tells	-16	-12	-25
kind -3 tool	-23	12
kind -3 verbish		-7	-6
kind -3 word	-12	-15	-18
kind -3 work	32	-9	-7
kind -4 area		-10
kind -4 defect	-9		-7
kind -4 finish	12	7	-8
kind -4 fixture	-9		-15
kind -4 material	-17
kind -4 part	-7	-13	-22
kind -4 size	-7	-17
kind -4 surface	-15	-6
kind -4 tells	-9		-26
kind -4 tool			-24
kind -4 verbish	-10
kind -4 word		-13	-9
kind -4 work	-13	-9	-17
kind area	-10
kind defect	-12	-20	-11
kind finish	-11	-13	-22
kind fixture	14	25	22
kind here-after area	-6	47
kind here-after defect	-7	-20
kind here-after finish	27
kind here-after fixture	-21	14
kind here-after material		32
kind here-after part		34
kind here-after size		28
kind here-after surface		18
kind here-after tells	-7	-41
kind here-after tool		7
kind here-after verbish	-11	23
kind here-after word	-7
kind here-before area	-17	-26	-62
kind here-before defect	12	35	31
kind here-before finish	-9	15
kind here-before fixture	24	29	26
kind here-before material	38	42
kind here-before part	63	41	23
kind here-before size	33
kind here-before surface	34
kind here-before tells	-17	-11	-26
kind here-before tool	-23	27	13
kind here-before verbish	26		-42
kind here-before word	7	-6	-25
kind material	14	11	10
kind part	12	18	27
kind size	9		-10
kind surface		6
kind tells	-17	-18	-33
kind tool	-13	-8	-11
kind verbish			-8
kind word	-12	-16	-15
kind work	7	-18	-34
lead a -1	10
lead a -2	44	-28
lead a -3	-38	-12
lead a -4	-36	-11
lead a here-after	39	19
lead a here-before	-34	45
lead about -3	-23
lead about -4	-7
lead about here-after	7
lead about here-before	44
lead area -1		-38
lead area -2		27
lead area -3		-17
lead area -4		-15
lead area here-after		-9
lead area here-before	12	32
lead at -1	-14
lead at -3	-16
lead at -4	-13
lead at here-after	-11
lead at here-before	61
lead by -1	-15
lead by -3	-13
lead by -4	12
lead by here-after	10
lead by here-before	25
lead defect -1	-13
lead defect -2	-11
lead defect -3	-18
lead defect -4	-16
lead defect here-before	41
lead down -2	-10
lead down here-after	-20
lead down here-before	47
lead every -1	-74
lead every -2	-56
lead every here-before	72
lead fixture -1	-40	7
lead fixture -2	-13
lead fixture -3	-24
lead fixture -4	-7
lead fixture here-after	-10	-13
lead fixture here-before	64	16
lead for -1	19
lead for -2	-31
lead for -3	-13
lead for -4	-12
lead for here-before	36
lead in -1	-9
lead in -2	15
lead in -3	29
lead in -4	-29
lead in here-before	18
lead mark -1	23
lead mark -2	-11
lead mark -3	-28
lead mark -4	-12
lead mark here-after	-7
lead mark here-before	33
lead material -1	8	10
lead material -2	-29	-12
lead material -4	-14	-22
lead material here-after		-12
lead material here-before	20	19
lead number -1		15
lead number -2		45
lead number -3		-19
lead number -4		-52
lead number here-after		-26
lead number here-before		55
lead of -1	13
lead of -2	-27
lead of -3	-28
lead of -4	9
lead of here-after	-15
lead of here-before	40
lead off here-after	-8
lead off here-before	39
lead on -2		45
lead on here-after		25
lead on here-before		-36
lead out -1	24
lead out -2	-53
lead out -3	33
lead out -4	-36
lead out here-after	-7
lead out here-before	54
lead over -1	-24
lead over -2	13
lead over -3	63
lead over -4	-20
lead over here-before	-16
lead part -1	-29
lead part -2	-16	-15
lead part -3	-27	-8
lead part -4		-9
lead part here-after		-18
lead part here-before	51	31
lead past -2	26
lead quantity -1		19
lead quantity -2		11
lead quantity -3	-7	-31
lead quantity -4	-12
lead quantity here-after		-11
lead quantity here-before	34	56
lead role -1		-86
lead role -2		-46
lead role -3		-28
lead role -4		48
lead role here-after		133
lead size -1	-24	-38
lead size -2		-36
lead size -3	17	-20
lead size -4	-8
lead size here-after	-10	31
lead size here-before	32	37
lead surface -1		16
lead surface -2	6	-8
lead surface -3	-28	16
lead surface -4	-19	-22
lead surface here-after	-10	-27
lead surface here-before	36	17
lead tells -1	-20	-8
lead tells -2		-34
lead tells -3		32
lead tells -4		-28
lead tells here-after		-37
lead tells here-before	7
lead that -1		-33
lead that -3		-34
lead that -4		26
lead that here-after		15
lead that here-before		33
lead the -1	9	-17
lead the -2		-28
lead the -3		-25
lead the -4	23	-42
lead the here-after		67
lead the here-before		-19
lead to -1	32	26
lead to -2	10	31
lead to -3	-26
lead to here-after		28
lead to here-before	14	-18
lead tool -1		-27
lead tool -2		-23
lead tool -3		-14
lead tool -4		22
lead tool here-after		-9
lead tool here-before		33
lead up -1	52
lead up -2	-23
lead up -4	-26
lead up here-before	8
lead verbish -1	10	7
lead verbish -4	-26	-12
lead verbish here-after	-10	-23
lead verbish here-before	40	31
lead with -1	-50	-13
lead with -2		-11
lead with -3		22
lead with -4		-27
lead with here-after		-25
lead with here-before		53
lead within -1	-44
lead within -2	43
lead word -1	8	10
lead word -3	-9	-12
lead word -4	-15	-12
lead word here-after		11
lead word here-before	28	28
lemma be object	-14	-13
lemma be subject	36	24
lemma be subject-late		7
lemma bend subject		43
lemma buzz object		-31
lemma buzz subject		41
lemma call subject	21
lemma come object		-23
lemma crack object		6
lemma crack subject		63
lemma cut object		15
lemma drill object	-41
lemma drill subject	48
lemma drip object		-28
lemma drip subject		53
lemma dump object		-14
lemma dump subject		28
lemma find object		79
lemma finish object	11
lemma get object		-23
lemma get subject		51
lemma go object	14
lemma go subject	25	-14
lemma hang object		-38
lemma hang subject	26	-55
lemma have object		-15
lemma have subject	41	18
lemma have subject-late	-46
lemma hit object		-66
lemma hit subject		75
lemma hold object	38
lemma hold subject	70
lemma hum subject		-28
lemma keep subject		56
lemma land object		-23
lemma land subject		-32
lemma leak object		-8
lemma leak subject		34
lemma leave object	73	23
lemma leave subject		15
lemma make object		56
lemma measure object	-25
lemma measure subject	36
lemma measure subject-late	-10
lemma miss object		70
lemma move object	-27	24
lemma need object	-12	56
lemma need subject	25
lemma pull object	30	43
lemma pull subject		6
lemma put object	-12	-37
lemma read object	-38
lemma read subject	-19	31
lemma rip subject	67
lemma run object	-20	-25
lemma run subject	-51	50
lemma say object	-19	128
lemma say subject	-8	-24
lemma see object		21
lemma send object		-50
lemma show subject		-20
lemma sit object	29	-50
lemma sit subject	34	21
lemma stick object		-31
lemma stick subject	54	74
lemma swap object		21
lemma take object		65
lemma think object		-80
lemma trip object		-14
lemma trip subject		11
lemma turn subject		-16
lemma use object		107
lemma want object	46	38
lemma want subject	-10
lemma weep subject		42
lemma wobble subject		43
not-carried	-37
not-carried +1 none	-16
not-carried +1 own	-9
not-carried +1 pointer	-22
not-carried +1 tells	-17
not-carried -1 own	-18
not-carried -1 person	-56
not-carried -1 pointer	-12
not-carried -1 tells	-17
not-carried -2 none	-38
not-carried -2 own	-14
not-carried -2 person	-37
not-carried -2 pointer	-45
not-carried -2 tells	-43
not-carried -3 none	-14
not-carried -3 own	-8
not-carried -3 person	-26
not-carried -3 pointer	-12
not-carried -3 tells	-37
not-carried -4 none	-14
not-carried -4 own	-14
not-carried -4 person	15
not-carried -4 pointer	-32
not-carried -4 tells	-16
not-carried here-after own	-8
not-carried here-after pointer	6
not-carried here-before none	38
not-carried here-before own	28
not-carried here-before pointer	20
not-carried here-before tells	-39
not-told		-23
not-told +1		-14
not-told -1		22
not-told -2		-6
not-told -3		-7
not-told -4		-12
not-told here-after		-20
not-told here-before		23
number many many			72
number many one			-61
number none many			12
number none one			-7
opens-with +1	-40
opens-with -1	53	-17
opens-with -2	9	-8
opens-with -3	-15	-26
opens-with -4	-35	-28
opens-with here-after	-9	43
part +1 bare	-12
part +1 object	-15	-17
part +1 opens	-24	-11
part +1 subject	-18
part +1 subject-late	-16	-34
part -1 bare	-25	-12	-26
part -1 object	-10	-6
part -1 opens	20	10	20
part -1 subject	28	12	38
part -1 subject-late			22
part -2 bare	-15		-16
part -2 object	-12	-10	-7
part -2 opens			13
part -2 subject	13	-8	24
part -2 subject-late	9	25
part -3 bare	-20		-10
part -3 object	-13	-14	-8
part -3 opens	24	11	15
part -3 subject	-9	-10
part -3 subject-late	9	-19	15
part -4 bare	-9	-7
part -4 object	-14	-16	-15
part -4 opens			7
part -4 subject	-11		-17
part -4 subject-late		-6	-28
part bare	-22	-11	-17
part bare area	-10	8
part bare defect	-18	-10	-30
part bare finish	-23	-9
part bare fixture			-22
part bare material		8	-16
part bare part	-9		15
part bare size	-21	-9	22
part bare surface	-22	-14	-14
part bare tells	-31	-9	-26
part bare tool	43	-29	14
part bare verbish			30
part bare word	-16	-17	-16
part bare work	-9	-33
part here-after bare		-15
part here-after object	-7	6
part here-after opens		52
part here-after subject		63
part here-after subject-late	-25	13
part here-before bare			-48
part here-before object	15	9
part here-before opens	47	35	-41
part here-before subject	41	28	14
part here-before subject-late		6	-55
part object	-25	-20	-16
part object area	-14
part object defect	-12	-22	-9
part object finish	-10	-25	-31
part object fixture	-10	22	22
part object part	8	17	28
part object size	8		14
part object surface	-7		-8
part object tells	-22	-20	-24
part object tool	-16	-23	-7
part object verbish	-12	-9	-17
part object word	-17	-14	-17
part object work	-14	-13	-13
part opens	21	17	16
part opens area	12	7	34
part opens defect	12	-23	18
part opens finish	-43	-10	-29
part opens fixture	28	35	62
part opens material	31	19	16
part opens part	24	16	18
part opens size			-42
part opens surface	7	35	28
part opens tells	15	32	-28
part opens tool	-11		-15
part opens verbish	14
part opens word			-10
part opens work	17		-28
part subject	22	17	18
part subject area	-19	26
part subject defect	-19	-36	-45
part subject finish	56	49	22
part subject fixture	33	23	22
part subject material	13	15	25
part subject part	8	18	19
part subject size	24		-27
part subject surface	21	6	20
part subject tells	-14	-38	-40
part subject tool	-12	73	-42
part subject verbish			-23
part subject word	8		8
part subject work	9	-31	-18
part subject-late area	-18	-23	-23
part subject-late defect	-22
part subject-late finish	-18	24	27
part subject-late fixture			-11
part subject-late material	23	20	38
part subject-late part	12	-13	13
part subject-late size	28	12
part subject-late surface	-10	30
part subject-late tells			-14
part subject-late tool	-31	-27	6
part subject-late verbish		10	47
part subject-late word			-23
points both -1			26
points both -2			-78
points both -3			8
points both -4			13
points both here-before			30
points both object			-43
points both subject			36
points em -1			-7
points em -2			19
points em -3			11
points em -4			-30
points em bare			-10
points em here-before			8
points em object			6
points em opens			-13
points em subject-late			11
points it -2			10
points it -4			-9
points it bare			-24
points it object			-18
points it opens			9
points it subject			25
points none -1			22
points none -3			-12
points none -4			-15
points none bare			-16
points none here-before			-7
points none object			-23
points none opens			21
points none subject			20
points none subject-late			-7
points one -1			46
points one -2			-23
points one -3			-20
points one -4			-12
points one bare			15
points one here-before			-6
points one object			-13
points one opens			-10
points one subject			8
points one subject-late			13
points that -1			27
points that -2			10
points that -3			26
points that -4			-52
points that bare			-57
points that here-before			-24
points that opens			17
points that subject			20
points that subject-late			-34
points them -1			75
points them -3			-8
points them -4			-84
points them bare			-27
points them here-before			-18
points them object			35
points them subject			-18
points them subject-late			-21
points they -1			20
points they -2			6
points they -3			-36
points they bare			37
points they here-before			-10
points they object			-40
points they opens			57
points they subject			-29
points they subject-late			45
points this -1			-37
points this -2			54
points this -4			-33
points this object			-9
points this opens			20
points this subject			-11
points those -1			-14
points those -2			21
points those -3			52
points those -4			-47
points those bare			28
points those here-before			-26
points those opens			27
points those subject			-23
points those subject-late			-12
prep about		-11	-42
prep above	-23	-6	-29
prep across	-20	-42	-7
prep after	-35	-50	-28
prep along	-40	-6	-19
prep around	-26	8	14
prep at	-28	-24	-25
prep before		-13	-12
prep behind	-13	-26	-31
prep below	24	-22	-17
prep between	8	39	-23
prep by	-37	-35	-61
prep down	-10	33	6
prep for	-28		-13
prep from	-30	-35	-47
prep here-after about		-10
prep here-after at		-17
prep here-after before	-19
prep here-after behind	21	-29
prep here-after below		-79
prep here-after by	-18	-24
prep here-after down		44
prep here-after for	-19
prep here-after from		-46
prep here-after in	-9	12
prep here-after into		-33
prep here-after near		-33
prep here-after of	7
prep here-after off		32
prep here-after on	-10	21
prep here-after out		-14
prep here-after over	-9	-6
prep here-after past		-20
prep here-after through		87
prep here-after to	-14	-40
prep here-after toward	-17	-65
prep here-after under		-35
prep here-after up		63
prep here-after with	-7	-53
prep here-after without		-53
prep here-before along		-52
prep here-before at	-73	-38	14
prep here-before behind	-10	-21
prep here-before by	-81	-100	-50
prep here-before for	-40	-10
prep here-before from	-110	-42	9
prep here-before in	-18	-14	-9
prep here-before of	-8	10	-24
prep here-before off	-49	-48
prep here-before on	-18	-28	15
prep here-before over	-29	-44
prep here-before to	-44	-53	-14
prep here-before under	-52	-50
prep here-before up		-21
prep here-before with	7	-19
prep in	-12	-10	-23
prep inside	-17	50
prep into	-16	-27	-23
prep near	-44	-50	-53
prep of	-11	-9	-19
prep off	-15	6	12
prep on	-18	-8
prep other about			-39
prep other above	-42	-8	-23
prep other across	-7	-39	-7
prep other after	-37	-19	-28
prep other along	-33	21	-17
prep other around	-35	-15	14
prep other at	-22	-20	-26
prep other before		-21	-12
prep other behind	-23	-20	-31
prep other below	44		-17
prep other between	-8	-8	-23
prep other by	-25	-24	-60
prep other down	-15	11	6
prep other for	-23		-12
prep other from	-23	-25	-53
prep other in	-12	-16	-24
prep other into			-20
prep other near	-31	-20	-53
prep other of	-14	-14	-19
prep other off	-17		14
prep other on	-17	-13	-7
prep other out	-16	-29	-9
prep other over	-19		-30
prep other past		18
prep other through		-30	31
prep other to	-19	-25	-30
prep other toward	-18	-43	-50
prep other under	-26	-27	-50
prep other up	39		12
prep other with	-17	-17	-25
prep other without			22
prep out	-36
prep over	-22	-9	-45
prep past	-12
prep through	-39	41	31
prep to	-22	-31	-30
prep toward	-39	-69	-50
prep under	-31	-40	-51
prep up	26	18	12
prep with	-16	-23	-25
prep without	-7	-43	22
rank after 0	-10
rank after 1	-10
rank after 2	-12	-7
rank after 3	-13	-10
rank after 4	-17
rank before 0	14	20	-16
rank before 1	18	8	10
rank before 2		-11	10
rank before 3	-8	-10
rank before 4	-18	-20	-10
says copula	10		8
says imperative		7	7
says modal	-10		-18
says owed		-9
says past	-10
says present			-14
sentences -1	-35	-46	-52
sentences -1 bare	-22	-24	-35
sentences -1 object	-27	-25	-30
sentences -1 opens	-22	-28	-40
sentences -1 subject	-8	-27
sentences -1 subject-late	-19	-8	-29
sentences -2	-24	-30	-50
sentences -2 bare	-13	-16	-21
sentences -2 object		-18	-29
sentences -2 opens	-17	-19	-22
sentences -2 subject	-25	-13	-42
sentences -2 subject-late	8		-6
sentences 1	-17	-35
sentences 1 bare	-10	-31
sentences 1 object		-21
sentences 1 opens	-21	-35
sentences 1 subject	-18	-30
sentences 1 subject-late	-18	-22
size 1	-18	-31	-36
size 2	18	25	40
size 3	14	43	41
stands-off-after	-10	9
subject none +1	-22	-21
subject none -1	8
subject none -2		-11
subject none -4	-20	-15
subject none here-after		15
subject none here-before	38	29
subject own +1	-13	-10
subject own -1	-20
subject own -2	-12
subject own -3		-14
subject own -4	-16	-16
subject own here-after		-11
subject own here-before	41	31
subject person +1	-8
subject person -1	32	-35
subject person -2	-45	-13
subject person -3	-44
subject person -4	54	11
subject person here-after	-14	10
subject pointer +1	-32	-19
subject pointer -1	30
subject pointer -2	6
subject pointer -3	-11	-17
subject pointer -4	-22	-20
subject pointer here-after	-12	39
subject pointer here-before	34	-9
subject tells +1	-18	26
subject tells -1	41	-62
subject tells -2	14	-42
subject tells -3	16	33
subject tells -4	-17	-19
subject tells here-after		9
subject tells here-before	-29	21
told -1		78
told -2		19
told -3		25
told -4		22
told defect		-32
told finish		12
told fixture		28
told here-after		16
told here-before		17
told material		24
told part		31
told size		-28
told surface		19
told tells		39
told verbish		9
touches-before	24	23
unit area area	-26
unit area defect	-8
unit area fixture	-33
unit area material	59
unit area part	-19
unit area surface	31
unit area word	-23
unit current defect	-23
unit current part	56
unit current surface	-36
unit current verbish	15
unit current word	-26
unit flow material	-14
unit flow part	51
unit flow word	-11
unit length area	-9
unit length defect	-10
unit length finish	-23
unit length fixture	15
unit length material	14
unit length part	7
unit length size	15
unit length tells	-12
unit length tool	-18
unit length word	-15
unit length work	-22
unit none area	-6
unit none defect	-18	-20
unit none finish		-13
unit none fixture	21	24
unit none material	22	10
unit none part	23	19
unit none size	-13
unit none surface	-8	7
unit none tells	-12	-18
unit none tool	-16	-7
unit none verbish	-15
unit none word	-12	-15
unit none work	36	-18
unit other defect	-31
unit other material	14
unit other part	-46
unit other surface	-14
unit other word	49
unit percent area	-12
unit percent fixture	-18
unit percent material	10
unit percent size	13
unit percent surface	51
unit percent tells	-55
unit percent tool	30
unit percent verbish	-31
unit percent word	-10
unit pressure defect	-13
unit pressure material	-8
unit pressure part	-47
unit pressure size	37
unit pressure surface	24
unit pressure verbish	-14
unit slope material	-31
unit slope part	7
unit slope surface	22
unit slope word	24
unit temperature area	7
unit temperature defect	-13
unit temperature fixture	-22
unit temperature material	-15
unit temperature part	6
unit temperature size	12
unit temperature word	15
unit voltage defect	-28
unit voltage material	-41
unit voltage part	58
unit voltage verbish	-21
unit voltage word	26
unit volume material	-43
unit volume part	20
unit volume surface	45
unit volume word	-41
unit weight word	-16
use buy	-12	9	-9
use have	10	-13	11
use measure	11	-14
use move	-10		-24
use need	-6	-14
use return		16
use say	-6		-35
use see	20	-11	-13
use use		-6	-27
use work	-8
where +1	-21	-14
where -1	7		15
where -3		-10
where -4	-18	-16	-18
where here-after	-6	9
where here-before	36	28	-7
whole after about defect		-9
whole after at area		-25
whole after at defect		21
whole after at fixture	7
whole after at material		-32
whole after at part	75	59
whole after at surface		-20
whole after at verbish	10	-19
whole after at word	53	-15
whole after behind defect		-20
whole after behind word		-28
whole after below material	64
whole after by defect		-15
whole after by fixture	-7	-24
whole after by part		-9
whole after by word	-38	9
whole after centers size	43
whole after down word	-13
whole after end defect		-15
whole after for defect		-10
whole after from defect		-7
whole after from fixture	20
whole after from part		-11
whole after from surface	-29	-16
whole after from word	10	59
whole after in area		-9
whole after in defect		-11
whole after in fixture		-10
whole after in material		11
whole after in surface	-40	-12
whole after in tool		-8
whole after in verbish		-18
whole after in word	-15	-28
whole after number defect		-10
whole after of defect		-15
whole after of material	64
whole after of word	32
whole after off material	15
whole after off surface	21
whole after off verbish	-37
whole after off word	46	-13
whole after on defect		-14
whole after on size	-35
whole after on surface	68	-28
whole after on tells	-12
whole after on word	-8	-22
whole after out material		-7
whole after out surface		-22
whole after over size	-30
whole after quantity area		15
whole after quantity defect		-12
whole after quantity fixture		-14
whole after quantity material		-32
whole after quantity size		-7
whole after quantity surface		18
whole after quantity tells		-17
whole after quantity verbish		-17
whole after quantity word		-18
whole after term area		37
whole after term defect		-25
whole after term finish	-35	-14
whole after term fixture	38	38
whole after term material	-6
whole after term part	-7	-16
whole after term size	65	-16
whole after term surface		-24
whole after term verbish	11
whole after term word	7	-13
whole after through defect		-7
whole after to defect		-8
whole after to part	-20
whole after to surface	29
whole after to word	-35
whole after up defect		-10
whole after up word	-27
whole after with defect		-17
whole after with word		-8
whole after word area	-30	7
whole after word defect	-48	-13
whole after word finish		-10
whole after word fixture	-50	7
whole after word material	-10
whole after word part	-47
whole after word size	58	-7
whole after word surface	7	8
whole after word tells	-15
whole after word tool		-32
whole after word verbish	-6	-7
whole after word word		-9
whole article a	10	-14	9
whole article none	-14	-12	-25
whole article other	-10		-9
whole article the			16
whole behind about -1		14
whole behind about -2		-18
whole behind about here-after		-9
whole behind about here-before		-7
whole behind above +1	-16
whole behind above -1	16
whole behind above -2	-22
whole behind above here-before	17
whole behind across +1	-27
whole behind across -1	46
whole behind across -2	-34
whole behind across -3	-11
whole behind across -4	-26
whole behind across here-after	-56
whole behind across here-before	79
whole behind after +1	-12
whole behind after -1	-24
whole behind after -2	-23
whole behind after here-before	41
whole behind at +1	-11	-6
whole behind at -1	-38
whole behind at -2	-14	-13
whole behind at -3	-19	-9
whole behind at -4	-16	-6
whole behind at here-after	65
whole behind at here-before	10	15
whole behind before here-after	-30
whole behind behind here-after	75	39
whole behind behind here-before		-9
whole behind below +1	-13
whole behind below -1	-9
whole behind below here-after	54
whole behind by +1	-10	17
whole behind by -1	7	-38
whole behind by -2	27	-31
whole behind by -3	-28
whole behind by -4	12	-10
whole behind by here-after	-18	-28
whole behind by here-before	18	-20
whole behind centers -1	-21
whole behind centers here-after	35
whole behind deep +1	-17
whole behind deep -2	-26
whole behind deep -3	-32
whole behind deep -4	-31
whole behind deep here-after	-46
whole behind down +1	-15	-15
whole behind down -1	67	-26
whole behind down -2	-44
whole behind down here-after	9	11
whole behind down here-before	20	13
whole behind end +1	-24	-9
whole behind end -1	8	-9
whole behind end -2	-8	-15
whole behind end -3	-18
whole behind end -4	-16	-10
whole behind end here-after		-15
whole behind end here-before	21	21
whole behind for +1	-14
whole behind for -1	41
whole behind for -2	-25
whole behind for -3	-13	-14
whole behind for -4	-12
whole behind for here-after	-61	-40
whole behind for here-before		39
whole behind from +1	-14	-14
whole behind from -1		-24
whole behind from -3	-9
whole behind from -4	-10	29
whole behind from here-after		20
whole behind from here-before	33	11
whole behind high +1	-17
whole behind high -1	22
whole behind high -2	7
whole behind high -3	-27
whole behind high -4	-26
whole behind high here-before	21
whole behind in +1	-19	-9
whole behind in -1	19	30
whole behind in -2	29	-11
whole behind in -3	-31	-10
whole behind in -4	-16	-11
whole behind in here-after	-21	-28
whole behind in here-before	31	6
whole behind into here-after		-33
whole behind long +1	-19
whole behind long -1	33
whole behind long -2	-16
whole behind long -4	-27
whole behind long here-after	-24
whole behind long here-before	62
whole behind low +1	-12
whole behind low -1	-67
whole behind low -3	-7
whole behind low -4	40
whole behind low here-before	-48
whole behind mark +1	-11
whole behind mark -1	23
whole behind mark here-after	-42	30
whole behind mark here-before	-12	35
whole behind near here-after		-17
whole behind near here-before		37
whole behind number -2		-31
whole behind number -4		-7
whole behind number here-after		55
whole behind number here-before		-7
whole behind of +1	-16
whole behind of -1	-27
whole behind of -2	-23
whole behind of -3	-19
whole behind of here-after	75
whole behind off +1	-13
whole behind off -1	-9	-24
whole behind off -2	14	-8
whole behind off -3	16
whole behind off -4	-12
whole behind off here-after	25	28
whole behind off here-before		-17
whole behind on +1		-13
whole behind on -1	-35
whole behind on -2	-33
whole behind on -3	20	-20
whole behind on -4	9
whole behind on here-after	-7	-16
whole behind on here-before	-29	-20
whole behind out +1	-12
whole behind out -1	-25	-43
whole behind out -3	38
whole behind out here-after	15	-39
whole behind over +1	-24
whole behind over -1	21
whole behind over -2	-31
whole behind over -3	-13
whole behind over -4	-17
whole behind over here-after	-29	50
whole behind over here-before	27	7
whole behind quantity +1	-7	-8
whole behind quantity -1		-16
whole behind quantity -2	-37	21
whole behind quantity -3		-15
whole behind quantity here-after	18	-16
whole behind quantity here-before	-21	6
whole behind short +1	-12
whole behind short -1	-26	13
whole behind short -2	-33
whole behind short -3	-8
whole behind short here-after	-10
whole behind short here-before	14
whole behind tall +1	-13
whole behind tall -1	16
whole behind tall -2	26
whole behind tall here-before	-41
whole behind term +1	-11	-18
whole behind term -1	15	7
whole behind term -2	-12	-16
whole behind term -3	-7	-11
whole behind term -4	-19
whole behind term here-after	26
whole behind term here-before	12	-6
whole behind thick +1	-37
whole behind thick -1	36
whole behind thick here-before	-31
whole behind through here-after		12
whole behind through here-before		-20
whole behind to +1	-20	-7
whole behind to -1	9
whole behind to -2	6
whole behind to here-after		-11
whole behind to here-before	29	15
whole behind toward -1	-17
whole behind toward -2	14
whole behind toward here-after	-55
whole behind under +1	-22
whole behind under -1	54
whole behind under -2	-20
whole behind under here-after		-8
whole behind under here-before	49
whole behind up +1	-20
whole behind up -1	6	19
whole behind up -2	25
whole behind up -3	-17
whole behind up -4	-23	-8
whole behind up here-after	52	-18
whole behind up here-before	-50
whole behind wide +1	-17
whole behind wide -1	-29
whole behind wide -2	-33
whole behind wide -3	-12
whole behind wide -4	-31
whole behind wide here-before	41
whole behind with +1	-9
whole behind with -1	-14	-15
whole behind with -2	-8
whole behind with -3	13
whole behind with -4	-20
whole behind with here-after	15	-53
whole behind with here-before		-7
whole behind word +1	-14
whole behind word -2	8
whole behind word -4	-14	-7
whole behind word here-after		-11
whole behind word here-before	16
whole between 	19	8
whole between about	45
whole between and	-83
whole between are	7	6
whole between be	29
whole between by	41
whole between come		8
whole between come out	9
whole between cut	7
whole between for	31
whole between get		17
whole between has		28
whole between have		22
whole between have a		16
whole between is	26	7
whole between just		9
whole between maybe	14
whole between measure	-21
whole between of	23
whole between on	22
whole between only	26
whole between over	12
whole between read	55
whole between run	46
whole between say	8
whole between sit	-19
whole between still		27
whole between the		-41
whole between to	13
whole between up	33
whole between with		-15
whole carried	24
whole carried -1 none	7
whole carried -1 own	53
whole carried -1 person	10
whole carried -1 pointer	19
whole carried -1 tells	48
whole carried -2 none	28
whole carried -2 own	56
whole carried -2 pointer	26
whole carried -2 tells	43
whole carried -3 pointer	-12
whole carried -4 own	18
whole carried here-before none	31
whole carried here-before pointer	40
whole carried here-before tells	21
whole counted count	22	-8	46
whole counted current	18		10
whole counted length	9		-9
whole counted percent	38		14
whole counted power	-30
whole counted pressure	-10	-16	-10
whole counted slope	-21
whole counted time	36	-31
whole counted volume	6		-32
whole counted weight	-7		-21
whole does ask fixture			46
whole does ask material			14
whole does ask part			27
whole does ask surface			-36
whole does ask verbish			-9
whole does ask word			41
whole does be area			43
whole does be defect			-25
whole does be finish			-42
whole does be fixture			20
whole does be part			16
whole does be surface			12
whole does be tells			-37
whole does be verbish			-7
whole does bring defect			-43
whole does bring material			32
whole does bring part			35
whole does bring surface			-13
whole does bring tool			22
whole does bring word			-10
whole does call area			13
whole does call defect			-27
whole does call fixture			-23
whole does call material			38
whole does call surface			22
whole does call verbish			-19
whole does change area			7
whole does change material			41
whole does change surface			-8
whole does check word			-19
whole does clean defect			-11
whole does clean fixture			-22
whole does clean material			-16
whole does clean part			-11
whole does clean surface			10
whole does clean word			-21
whole does close defect			-24
whole does close material			-33
whole does close surface			35
whole does close word			-21
whole does come area			20
whole does come defect			-41
whole does come fixture			-10
whole does come material			-23
whole does come surface			28
whole does come verbish			31
whole does come word			-27
whole does cut fixture			13
whole does cut part			14
whole does cut surface			-19
whole does cut verbish			-14
whole does cut word			-13
whole does dig part			-19
whole does dig word			6
whole does do defect			-11
whole does do material			-42
whole does do part			22
whole does do surface			12
whole does do word			-30
whole does drill defect			46
whole does dry area			74
whole does dry fixture			11
whole does dry material			-54
whole does dry word			21
whole does file part			37
whole does file word			-16
whole does fill area			56
whole does fill defect			84
whole does fill fixture			-16
whole does fill surface			31
whole does fill word			-30
whole does fix defect			-10
whole does fix material			-26
whole does flip defect			-20
whole does flip word			-9
whole does flush fixture			8
whole does flush word			-7
whole does fre fixture			-30
whole does fre part			28
whole does fre word			-25
whole does get finish			-32
whole does get fixture			28
whole does get material			17
whole does get part			-11
whole does get surface			49
whole does get tool			-34
whole does glue area			-21
whole does glue defect			13
whole does glue material			-29
whole does glue surface			23
whole does glue word			-50
whole does go area			-22
whole does go defect			-23
whole does go finish			10
whole does go fixture			-18
whole does go material			8
whole does go part			22
whole does go surface			21
whole does go verbish			-14
whole does go word			26
whole does hang area			-53
whole does hang defect			-7
whole does hang fixture			8
whole does hang part			-8
whole does hang word			-21
whole does has material			54
whole does have area			6
whole does have fixture			-24
whole does have material			-40
whole does have part			15
whole does have surface			22
whole does have tool			-19
whole does have verbish			-31
whole does have word			-8
whole does hit defect			31
whole does hit surface			43
whole does i'll material			10
whole does i'll word			18
whole does leave material			22
whole does leave part			-7
whole does leave surface			-20
whole does leave word			-41
whole does let defect			-8
whole does let fixture			14
whole does let material			19
whole does let surface			-44
whole does let word			-52
whole does look area			-6
whole does look defect			-9
whole does look fixture			14
whole does look part			20
whole does look word			33
whole does make defect			24
whole does make material			-24
whole does make word			-20
whole does move area			10
whole does move material			-51
whole does move part			-33
whole does move surface			8
whole does move word			26
whole does need defect			28
whole does need fixture			63
whole does need material			16
whole does need part			55
whole does need size			-12
whole does need surface			-32
whole does need verbish			-25
whole does need word			-24
whole does open area			-11
whole does open defect			92
whole does open material			-7
whole does open part			16
whole does open surface			-27
whole does open word			-30
whole does order defect			-12
whole does order part			-30
whole does order verbish			30
whole does order word			-28
whole does paint material			25
whole does patch area			32
whole does patch material			21
whole does patch surface			26
whole does patch word			38
whole does pick word			50
whole does plane fixture			42
whole does plane surface			-8
whole does plane word			-9
whole does pull defect			-39
whole does pull fixture			51
whole does pull material			-45
whole does pull part			-40
whole does pull word			-33
whole does put defect			-10
whole does put finish			-10
whole does put material			-12
whole does put part			-10
whole does put size			34
whole does put surface			-26
whole does put verbish			16
whole does put word			-21
whole does replace area			-48
whole does replace defect			-27
whole does replace material			10
whole does replace part			-9
whole does replace surface			-19
whole does replace word			-34
whole does reset defect			-36
whole does reset material			-6
whole does reset part			-47
whole does reset word			-23
whole does rip defect			-20
whole does rip material			8
whole does run area			15
whole does run defect			9
whole does run fixture			8
whole does run material			-57
whole does run part			20
whole does run surface			13
whole does run verbish			-16
whole does run word			-44
whole does sand defect			19
whole does sand fixture			46
whole does sand material			18
whole does sand surface			67
whole does sand word			-37
whole does say area			-16
whole does say fixture			-14
whole does say material			-14
whole does say part			-10
whole does say surface			-30
whole does say verbish			-33
whole does say word			-37
whole does seal material			30
whole does seal word			-6
whole does see area			-7
whole does see defect			-12
whole does see fixture			-20
whole does see material			12
whole does see part			-21
whole does see surface			40
whole does see word			-17
whole does send defect			23
whole does send material			39
whole does send surface			-18
whole does send word			-15
whole does set defect			-21
whole does set material			28
whole does set surface			12
whole does shim defect			-41
whole does shim material			-6
whole does shim word			32
whole does sister material			33
whole does sister word			-24
whole does skim surface			-17
whole does skim word			-49
whole does snug defect			-8
whole does snug part			-7
whole does snug word			14
whole does splice defect			-8
whole does splice material			19
whole does stick word			39
whole does swap area			-47
whole does swap defect			-23
whole does swap fixture			12
whole does swap material			-26
whole does swap size			-16
whole does swap surface			-38
whole does swap verbish			-23
whole does swap word			15
whole does take area			20
whole does take defect			-30
whole does take fixture			14
whole does take surface			-9
whole does take verbish			-13
whole does take word			22
whole does tape defect			20
whole does tape material			14
whole does tape part			-29
whole does tape word			-15
whole does tell material			-32
whole does tell verbish			7
whole does tell word			13
whole does tighten defect			-22
whole does tighten material			11
whole does trim defect			-22
whole does turn defect			-16
whole does turn material			-18
whole does turn part			-16
whole does turn word			18
whole does use material			45
whole does walk surface			-12
whole does want area			-44
whole does want defect			-43
whole does want finish			-16
whole does want fixture			60
whole does want material			27
whole does want part			-36
whole does want verbish			13
whole far after 0	40	-9
whole far after 13+	-21	-8
whole far after 2	11	-7
whole far after 3-4	-19
whole far after 5-7	-19
whole far after 8-12	-24
whole far before 0	19	8	7
whole far before 1	20	8
whole far before 13+	-25	-11	-17
whole far before 2	25	13
whole far before 5-7	11	-11
whole flawed	-8
whole frame copula +1	-19	-7
whole frame copula -2	-9	-9
whole frame copula -3	-13	-8
whole frame copula -4	-12	-10	-12
whole frame copula area			30
whole frame copula defect			-14
whole frame copula fixture			30
whole frame copula here-after	16	-11
whole frame copula here-before	14	6	7
whole frame copula material			-11
whole frame copula part			17
whole frame copula tells			-30
whole frame copula tool			-22
whole frame copula verbish			-8
whole frame copula word			-27
whole frame imperative +1	-27	44
whole frame imperative -1	70	50
whole frame imperative -2	-8	41	16
whole frame imperative -3	-7	-21
whole frame imperative -4	-11	-26	-12
whole frame imperative defect			-11
whole frame imperative fixture			26
whole frame imperative here-after	-43	-14
whole frame imperative here-before	11	35	25
whole frame imperative part			24
whole frame imperative size			33
whole frame imperative surface			7
whole frame imperative tells			32
whole frame imperative verbish			-21
whole frame imperative word			-12
whole frame modal +1	-19	25
whole frame modal -1	37	-11	-9
whole frame modal -2	-9	26
whole frame modal -3	-15	-12	-20
whole frame modal -4	-18	-13	-15
whole frame modal area			-8
whole frame modal finish			7
whole frame modal fixture			22
whole frame modal here-after	13
whole frame modal here-before	36	8	47
whole frame modal material			6
whole frame modal part			-14
whole frame modal tells			-33
whole frame modal tool			-26
whole frame modal word			-13
whole frame none +1	-21	-10
whole frame none -1		7	23
whole frame none -2		-8
whole frame none -3	-14
whole frame none -4	-18		-12
whole frame none area			14
whole frame none defect			-11
whole frame none finish			-30
whole frame none here-after	15	-17
whole frame none here-before	16	7	-28
whole frame none material			12
whole frame none part			6
whole frame none surface			14
whole frame none tells			-33
whole frame none word			-11
whole frame owed +1	8	-6
whole frame owed -1			10
whole frame owed -2	-12	-18	18
whole frame owed -3	-8	-16	6
whole frame owed -4		-11	-18
whole frame owed area			18
whole frame owed defect			-24
whole frame owed finish			-31
whole frame owed fixture			22
whole frame owed here-after	17	7
whole frame owed here-before		44	13
whole frame owed material			7
whole frame owed part			10
whole frame owed size			-15
whole frame owed surface			29
whole frame owed tells			-21
whole frame owed tool			-13
whole frame owed verbish			-9
whole frame past +1	-20	-13
whole frame past -1	-8	-21
whole frame past -2			-11
whole frame past -3	-9		-29
whole frame past -4	-16		-24
whole frame past defect			-20
whole frame past finish			-15
whole frame past here-after	-7	6
whole frame past here-before	26	13	-20
whole frame past surface			-16
whole frame past tells			24
whole frame past tool			-24
whole frame past verbish			-25
whole frame past word			-25
whole frame past work			-13
whole frame present +1	-24	-15
whole frame present -1	10	-22	-7
whole frame present -2	6	-13
whole frame present -3	-11		13
whole frame present -4	-16		-11
whole frame present area			-23
whole frame present defect			19
whole frame present fixture			34
whole frame present here-after	18	-8
whole frame present here-before	30		17
whole frame present material			-24
whole frame present part			11
whole frame present size			15
whole frame present surface			7
whole frame present tells			-29
whole frame present verbish			-6
whole heading	-7
whole heading +1	-16	-7
whole heading -1	-13	27
whole heading -2	-7	-19
whole heading -3			10
whole heading -4	-10		-7
whole heading here-after	37	-14
whole heading here-before	39	-7	-31
whole is-flaw	-20	-10
whole kind +1 area	-14
whole kind +1 defect	-17
whole kind +1 finish	-16	-9
whole kind +1 fixture	-7
whole kind +1 material	-14	-6
whole kind +1 part	-18
whole kind +1 size	-9
whole kind +1 surface	-15
whole kind +1 tells	-13
whole kind +1 tool	-13
whole kind +1 verbish	-12
whole kind +1 word	-12
whole kind -1 area		28	30
whole kind -1 defect	-12	-21	-10
whole kind -1 finish		20
whole kind -1 fixture	28	7
whole kind -1 material		-8
whole kind -1 part	15		14
whole kind -1 size	20	-15	25
whole kind -1 surface			7
whole kind -1 tells	-20	-26
whole kind -1 tool	-18	-14	-9
whole kind -1 word		-8	-12
whole kind -1 work	-10	-13
whole kind -2 area	-23		-23
whole kind -2 defect	-7	-7	-18
whole kind -2 finish	-26		-8
whole kind -2 fixture	33	6	43
whole kind -2 part	8		17
whole kind -2 size	-25	9	21
whole kind -2 surface	-7	10
whole kind -2 tells	-16	-13	9
whole kind -2 tool	-9	-12	-11
whole kind -2 verbish		-8
whole kind -2 word	-9		-11
whole kind -2 work	-25	-7	-16
whole kind -3 area		15
whole kind -3 defect	-17
whole kind -3 finish	-15		-28
whole kind -3 fixture	-12		14
whole kind -3 material	-7		-8
whole kind -3 size	-21		-20
whole kind -3 surface			-8
whole kind -3 tells	-7	-8	-28
whole kind -3 tool	-11	-7	-15
whole kind -3 verbish	-14		-17
whole kind -3 word	-7		-9
whole kind -3 work	-11
whole kind -4 area			14
whole kind -4 defect	-9		-13
whole kind -4 finish	-9		-10
whole kind -4 fixture	7
whole kind -4 material	-12		-14
whole kind -4 part	-11		-9
whole kind -4 size	-17		-19
whole kind -4 surface	-10
whole kind -4 tells	-9	15	-22
whole kind -4 tool	7	25	-15
whole kind -4 verbish	-11		-16
whole kind -4 word	-8		-8
whole kind -4 work	-8		-25
whole kind area	-8		6
whole kind defect		-9	-12
whole kind finish	-9		-11
whole kind fixture	12	8	17
whole kind here-after area	-15	19
whole kind here-after defect	-12	-10
whole kind here-after finish	-34	-11
whole kind here-after fixture		12
whole kind here-after material	39	-6
whole kind here-after part	-9	6
whole kind here-after size	37
whole kind here-after surface	12
whole kind here-after tells		-10
whole kind here-after tool		-27
whole kind here-after verbish	11
whole kind here-after word		-8
whole kind here-before area	-20	-9	-55
whole kind here-before defect	60	-14	18
whole kind here-before finish	52		7
whole kind here-before fixture	-7	15	-8
whole kind here-before material	9		49
whole kind here-before part	14
whole kind here-before size	19		17
whole kind here-before surface	22	20
whole kind here-before tells		16	-32
whole kind here-before tool	-13		-21
whole kind here-before verbish		-19	-22
whole kind part			8
whole kind size	9
whole kind tells	-11		-14
whole kind tool	-8		-16
whole kind verbish	-7	-9	-10
whole kind word	-13	-8	-17
whole kind work	-17	-7	-31
whole lead a -1		16
whole lead a -2	-11	-23
whole lead a -3	-26	-15
whole lead a -4	-20
whole lead a here-after	113	-16
whole lead a here-before	-29
whole lead about -3	-14
whole lead about -4	-17
whole lead about here-before	44
whole lead area -1		-17
whole lead area -2		18
whole lead area -3		-8
whole lead area -4		-8
whole lead area here-after		-17
whole lead area here-before	-12	-7
whole lead at -1	-15
whole lead at -2	15
whole lead at -3	-19
whole lead at -4	-28
whole lead at here-after	-24
whole lead at here-before	9
whole lead by -3	-21
whole lead by -4	-8
whole lead by here-after	-22
whole lead by here-before	17
whole lead defect -1	-16
whole lead defect -2	-16
whole lead defect -3	-14
whole lead defect -4	-17
whole lead defect here-before	44
whole lead down -1	-26
whole lead down -2	27
whole lead down here-after	-82
whole lead down here-before	30
whole lead every -1	-37
whole lead every -2	-32
whole lead fixture -1	-34	17
whole lead fixture -2	-28	-6
whole lead fixture -3	-25	-7
whole lead fixture -4	-14
whole lead fixture here-after	-52	-14
whole lead fixture here-before	58	23
whole lead for -1	58
whole lead for -3	-12
whole lead for -4	-16
whole lead for here-before	35
whole lead in -1	29
whole lead in -2	-16
whole lead in -4	-18
whole lead in here-before	22
whole lead mark -1	12
whole lead mark -2	19
whole lead mark -3	-6
whole lead mark -4	-14
whole lead mark here-after	-57
whole lead mark here-before	21
whole lead material -1	23	11
whole lead material -2	-16	-14
whole lead material -3	-11	16
whole lead material -4	-18	-7
whole lead material here-after	23	-19
whole lead number here-before		54
whole lead of -1	95
whole lead of -2	-18
whole lead of -3	-19
whole lead of -4	-22
whole lead of here-after	10
whole lead of here-before	8
whole lead off -1	-7
whole lead off here-after	-34
whole lead off here-before	25
whole lead on here-before		19
whole lead out -2	-24
whole lead out -4	-21
whole lead out here-after	-32
whole lead out here-before	16
whole lead over -1	18
whole lead over -2	-16
whole lead over -3	16
whole lead over -4	-19
whole lead over here-before	32
whole lead part -1	-22	-7
whole lead part -2	-12
whole lead part -3	-19	-8
whole lead part -4	-33
whole lead part here-after	-62	-20
whole lead part here-before	27
whole lead quantity -1		38
whole lead quantity -2		31
whole lead quantity -3		-16
whole lead quantity -4	-8	-14
whole lead quantity here-before		11
whole lead role -3		-6
whole lead role here-after		63
whole lead size -1	-11	-34
whole lead size -2	-11
whole lead size -3	-9
whole lead size -4	-15
whole lead size here-after	-44
whole lead size here-before	22	26
whole lead surface -1		8
whole lead surface -2	-12	31
whole lead surface -3	-31	24
whole lead surface -4	-14
whole lead surface here-after	-29	-19
whole lead surface here-before	15
whole lead tells -1	-7
whole lead tells -4		-7
whole lead tells here-after		-21
whole lead tells here-before	22	-7
whole lead that -1		-12
whole lead that -4		-9
whole lead that here-after		39
whole lead the -1	-23	-16
whole lead the -2		-16
whole lead the -3		-9
whole lead the -4	-15	-14
whole lead the here-after	126	12
whole lead to -1	13
whole lead to -2	-7
whole lead to -3	-20
whole lead to here-after	-6
whole lead to here-before	31
whole lead tool here-before		31
whole lead up -2	10
whole lead up -3	-19
whole lead up -4	-24
whole lead up here-after	17
whole lead up here-before	38
whole lead verbish -1	13	-17
whole lead verbish -2		-11
whole lead verbish -3	-12	-7
whole lead verbish -4	-15	-8
whole lead verbish here-after	38	-16
whole lead verbish here-before		12
whole lead with -1	-25
whole lead with -4		-6
whole lead with here-after	86	6
whole lead with here-before		12
whole lead within -1	-43
whole lead within -2	-19
whole lead within -3	14
whole lead word -1		-14
whole lead word -2	-6	-17
whole lead word -3	-7	-6
whole lead word here-after	18	-7
whole lead word here-before	17
whole lemma be object		-17
whole lemma be subject-late	33	22
whole lemma call subject	-9
whole lemma crack object		26
whole lemma cut object		-28
whole lemma drill object	-6
whole lemma drip object		6
whole lemma drip subject		11
whole lemma dump object		-13
whole lemma find object		25
whole lemma finish object	-33
whole lemma get object	38	-12
whole lemma get subject		-16
whole lemma go object	14
whole lemma go subject		10
whole lemma hang object	11	-35
whole lemma hang subject		-23
whole lemma have object	58
whole lemma have subject-late	15	21
whole lemma hit object		-19
whole lemma hit subject		-8
whole lemma land object		-17
whole lemma land subject		-16
whole lemma leak object		-23
whole lemma leave object	46	-6
whole lemma measure object	43
whole lemma measure subject	-8
whole lemma move object	-19
whole lemma need object	-8	60
whole lemma pull object	-20	16
whole lemma put object	28	22
whole lemma read object	16
whole lemma read subject	6
whole lemma rip subject	-7
whole lemma run object	-23
whole lemma run subject	22
whole lemma say object	-29	61
whole lemma say subject	45	-24
whole lemma see object		22
whole lemma sit object	11	-35
whole lemma stain object		28
whole lemma stick object		-22
whole lemma stick subject	11
whole lemma swap object		13
whole lemma take object	-10	-14
whole lemma tell object	-39
whole lemma use object		-49
whole lemma want object	41	-30
whole lemma want subject	-9
whole not-carried	-31
whole not-carried +1 none	-19
whole not-carried +1 own	-14
whole not-carried +1 person	12
whole not-carried +1 pointer	-22
whole not-carried +1 tells	-15
whole not-carried -1 own	-25
whole not-carried -1 person	-41
whole not-carried -2 none	-25
whole not-carried -2 own	-24
whole not-carried -2 person	-20
whole not-carried -2 pointer	-35
whole not-carried -2 tells	-37
whole not-carried -3 none	-17
whole not-carried -3 own	-12
whole not-carried -3 person	-16
whole not-carried -3 pointer	-10
whole not-carried -3 tells	-18
whole not-carried -4 none	-19
whole not-carried -4 own	-13
whole not-carried -4 person	-15
whole not-carried -4 pointer	-22
whole not-carried here-after none	25
whole not-carried here-after own	34
whole not-carried here-after pointer	42
whole not-carried here-before own	6
whole not-carried here-before person	31
whole not-carried here-before pointer	25
whole not-carried here-before tells	10
whole not-told		-18
whole not-told +1		-7
whole not-told here-after		-17
whole number many one			-21
whole number none one			-20
whole number one many			-8
whole opens-with +1	-19
whole opens-with -1	15	-19
whole opens-with -3		-23
whole opens-with -4	-21	-11
whole opens-with here-after	34
whole part +1 bare	-16
whole part +1 object	-16	-8
whole part +1 opens	-20
whole part +1 subject	-15
whole part +1 subject-late	-13
whole part -1 bare	-9	-9
whole part -1 opens			-8
whole part -1 subject	8	-7
whole part -1 subject-late	8		16
whole part -2 bare	-14	-13
whole part -2 object	-7	-6
whole part -2 subject-late	11	19	20
whole part -3 bare	-19		-11
whole part -3 object	-14	-6	-12
whole part -4 bare			-11
whole part -4 object	-11		-15
whole part -4 opens	-9
whole part -4 subject	-8
whole part -4 subject-late		-9
whole part bare	-8	-9	-8
whole part bare area		10
whole part bare defect	-14	-10	-27
whole part bare finish	-20		24
whole part bare fixture			-10
whole part bare material	7		14
whole part bare part	-11		20
whole part bare size	11		17
whole part bare surface	-10	-12	6
whole part bare tells	-23		-19
whole part bare tool	44		15
whole part bare verbish		-23	-30
whole part bare word	-7		-15
whole part bare work	-8
whole part here-after bare	15	-16
whole part here-after object	8	-7
whole part here-after subject-late		8
whole part here-before bare	26	21	16
whole part here-before object	30		18
whole part here-before opens	9		-42
whole part here-before subject-late	30	22	-18
whole part object		-12	-9
whole part object area	-15	9	19
whole part object defect	7	-11	-6
whole part object finish	-7		-17
whole part object fixture	9	10	18
whole part object part			17
whole part object size	13	-6
whole part object surface	13		-9
whole part object tells	-22	-10	-13
whole part object tool	-15	-7	-15
whole part object verbish			-6
whole part object word	-13	-6	-17
whole part object work	-8	-7	-12
whole part opens	-6
whole part opens finish	-10		-21
whole part opens fixture			24
whole part opens material	-6		-6
whole part opens part	7
whole part opens size		-10	-18
whole part opens surface	-17		13
whole part opens tells	9		-26
whole part opens tool	-8	-14	-14
whole part opens verbish	-8	-14	-13
whole part opens word			-7
whole part opens work	-23		-25
whole part subject area	-14
whole part subject defect	-24		-35
whole part subject finish	12	23	14
whole part subject fixture	10
whole part subject part			-7
whole part subject size			26
whole part subject surface	-6
whole part subject tells		-14	-32
whole part subject tool			-22
whole part subject verbish	-13	12	-14
whole part subject word		-6
whole part subject work		-11
whole part subject-late	12	11	10
whole part subject-late area			-18
whole part subject-late defect	-48	-22	-13
whole part subject-late finish	-19	7	26
whole part subject-late fixture	27	20	35
whole part subject-late material	11
whole part subject-late part	39		18
whole part subject-late size	42	30
whole part subject-late surface	21	44	41
whole part subject-late tells			66
whole part subject-late tool		34	-18
whole part subject-late verbish		-38	-11
whole part subject-late word	-16		-8
whole points both -1			41
whole points both -2			-20
whole points both -3			-11
whole points both -4			58
whole points both here-before			-54
whole points both object			-43
whole points both opens			36
whole points both subject			10
whole points em -1			-36
whole points em -2			16
whole points em -4			-25
whole points em bare			-21
whole points em object			-23
whole points em opens			-31
whole points em subject			-7
whole points em subject-late			26
whole points it -4			-15
whole points it here-before			-14
whole points it object			-17
whole points none -2			-7
whole points none -3			-14
whole points none -4			-12
whole points none bare			-12
whole points none here-before			25
whole points none object			-16
whole points none opens			-10
whole points none subject-late			22
whole points one -3			-21
whole points one -4			11
whole points one here-before			66
whole points one object			7
whole points one opens			25
whole points one subject			12
whole points one subject-late			-12
whole points that -1			29
whole points that -2			11
whole points that -4			-34
whole points that bare			-42
whole points that here-before			13
whole points that object			24
whole points that opens			-9
whole points that subject			-11
whole points that subject-late			10
whole points them -1			54
whole points them -2			-34
whole points them -3			-19
whole points them -4			-50
whole points them bare			-12
whole points them here-before			-37
whole points them object			-6
whole points them opens			-16
whole points them subject			-6
whole points them subject-late			-28
whole points they -1			-29
whole points they -2			15
whole points they -3			-9
whole points they -4			-10
whole points they bare			-6
whole points they here-before			-52
whole points they object			-9
whole points they opens			-8
whole points they subject			-27
whole points they subject-late			8
whole points this -1			9
whole points this -2			62
whole points this -4			-36
whole points this object			7
whole points those -1			48
whole points those -2			-31
whole points those -3			21
whole points those -4			-49
whole points those bare			-15
whole points those object			37
whole points those subject			-9
whole points those subject-late			-26
whole prep about		-15	-26
whole prep above			-8
whole prep across	-12	-16
whole prep after	-19	-16	-22
whole prep along	-16	-24	-24
whole prep around	-30	28	19
whole prep at	-11
whole prep before	-23	-12	-19
whole prep behind		28	53
whole prep below	59		-24
whole prep between	37		-27
whole prep by	-28		-19
whole prep down	7	-14	-23
whole prep for		10	10
whole prep from	-9	-11	-27
whole prep here-after about		-16
whole prep here-after above		-16
whole prep here-after along		-10
whole prep here-after at	37	-8
whole prep here-after before	-48
whole prep here-after behind	51	38
whole prep here-after below	59	-10
whole prep here-after by	-19
whole prep here-after down		-10
whole prep here-after for	-43	-22
whole prep here-after from	25
whole prep here-after in	-36	18
whole prep here-after into		-13
whole prep here-after near		-41
whole prep here-after of	48	-8
whole prep here-after off	58	-12
whole prep here-after on	-8	7
whole prep here-after out		-14
whole prep here-after over	-33	29
whole prep here-after past		-8
whole prep here-after through		59
whole prep here-after to	-30	-23
whole prep here-after toward	-53	-39
whole prep here-after under		-31
whole prep here-after up		23
whole prep here-after with	-11	-27
whole prep here-after without		-20
whole prep here-before along		-49
whole prep here-before at	-31	9	73
whole prep here-before behind	7	36
whole prep here-before by	-59	20	-40
whole prep here-before for	-25	75
whole prep here-before from	-27	-23	-8
whole prep here-before in	-13	7	-40
whole prep here-before of	38	21	6
whole prep here-before off	-8	49
whole prep here-before on		8	-19
whole prep here-before over	46	41
whole prep here-before to	-23	96	9
whole prep here-before under	7	6
whole prep here-before with	79
whole prep in	-12	7
whole prep inside	-34	8
whole prep into	-15	-21	-11
whole prep near	-43	37	37
whole prep of	9
whole prep off	25		-10
whole prep on	-13
whole prep other about			-30
whole prep other above	-23	9	-9
whole prep other across	-12	-8
whole prep other after	-10	-10	-17
whole prep other along	-32		-24
whole prep other around	-20		19
whole prep other at	-15		-9
whole prep other before	-10	-11	-19
whole prep other behind	-16	9	53
whole prep other below	23		-24
whole prep other between	24	-10	-27
whole prep other by	-19		-15
whole prep other down		-12	-23
whole prep other for	15		13
whole prep other from	-21	-13	-28
whole prep other in	-9
whole prep other into	-10	-9	-13
whole prep other near	-17	31	37
whole prep other off			-8
whole prep other on	-15
whole prep other out	-15	-11	-18
whole prep other over	-27	-7
whole prep other past			-58
whole prep other through		-10
whole prep other to	-6	-12	-23
whole prep other toward	-15	-13	-46
whole prep other under		13	-9
whole prep other up	19
whole prep other with	-7
whole prep out	-8	-24	-15
whole prep over	-16	14	-7
whole prep past		-16	-58
whole prep per	-10
whole prep through		32
whole prep to	-15	-7	-20
whole prep toward	-37	-38	-46
whole prep under			-10
whole prep up	36
whole prep with		-11
whole prep without	-10	-19
whole rank after 0		-10
whole rank after 1	-20
whole rank after 2	-19
whole rank after 3	-11
whole rank after 4	-8
whole rank before 0	16	6
whole rank before 3	-6
whole rank before 4	-19	-7	-14
whole says copula		-10	-8
whole says imperative		8	13
whole says none	-11	-11	-10
whole says owed	-7		-18
whole says past	-9
whole says present	6	-10
whole sentences -1	-32	-14	-26
whole sentences -1 bare	-21	-10	-18
whole sentences -1 object	-23	-12	-22
whole sentences -1 opens	-20		-12
whole sentences -1 subject	-10		-6
whole sentences -1 subject-late	-9		-8
whole sentences -2	-24	-10	-27
whole sentences -2 bare	-17		-23
whole sentences -2 object	-10		-26
whole sentences -2 opens	-15
whole sentences -2 subject	-15		-12
whole sentences -2 subject-late		-8	20
whole sentences 1	-19	-13
whole sentences 1 bare	-14	-10
whole sentences 1 object	-10	-8
whole sentences 1 opens	-19
whole sentences 1 subject	-15
whole sentences 1 subject-late	-14	-8
whole size 2	-14	-10	-15
whole size 3	-6		-12
whole stands-off-after		-9
whole subject none +1	-21
whole subject none -1	9	11
whole subject none -3	-12
whole subject none -4	-15
whole subject none here-after	11	-12
whole subject none here-before	21	7
whole subject own +1	-19	-10
whole subject own -1	-7
whole subject own -2	-11
whole subject own -3	-10	-7
whole subject own -4	-14	-7
whole subject own here-after	10	-14
whole subject own here-before	13	10
whole subject person +1	23	29
whole subject person -1	-26	-63
whole subject person -2	-26	-9
whole subject person -3	-40	-11
whole subject person -4	7	7
whole subject person here-after	-29	12
whole subject person here-before	12	-26
whole subject pointer +1	-20	-14
whole subject pointer -1	14	-14
whole subject pointer -2		-19
whole subject pointer -3	-14	-9
whole subject pointer -4	-16	-7
whole subject pointer here-after	8	8
whole subject pointer here-before	32
whole subject tells +1	-15
whole subject tells -1	44
whole subject tells -2	-15
whole subject tells here-after	60	-15
whole subject tells here-before	16	-12
whole told -1		29
whole told -3		21
whole told defect		-11
whole told finish		8
whole told fixture		17
whole told here-after		14
whole told size		-15
whole told surface		18
whole told tells		27
whole told tool		-21
whole told verbish		-25
whole touches-after	42
whole touches-before	20	9
whole unit area defect	49
whole unit area fixture	-34
whole unit area material	11
whole unit area part	-14
whole unit area surface	35
whole unit area verbish	-11
whole unit current defect	-41
whole unit current part	21
whole unit current surface	-15
whole unit current verbish	-12
whole unit current word	-38
whole unit flow material	-15
whole unit flow part	-16
whole unit flow word	-52
whole unit length area	-8
whole unit length defect	9
whole unit length finish	-9
whole unit length fixture	11
whole unit length tells	-20
whole unit length tool	-9
whole unit length word	-11
whole unit length work	-15
whole unit none defect	-17	-9
whole unit none fixture	25	8
whole unit none material	-6
whole unit none size	15
whole unit none surface	10
whole unit none tells	13
whole unit none verbish	-8	-9
whole unit none word	-9	-8
whole unit none work		-7
whole unit other defect	-9
whole unit other material	-24
whole unit other part	-21
whole unit other word	-9
whole unit percent defect	-23
whole unit percent finish	15
whole unit percent fixture	-22
whole unit percent material	-29
whole unit percent part	-8
whole unit percent size	25
whole unit percent surface	21
whole unit percent tells	-62
whole unit percent verbish	-26
whole unit percent word	-23
whole unit pressure area	-26
whole unit pressure defect	-19
whole unit pressure fixture	-40
whole unit pressure part	-13
whole unit pressure size	26
whole unit pressure surface	-26
whole unit pressure word	-31
whole unit slope material	-17
whole unit slope size	7
whole unit slope surface	-24
whole unit temperature area	9
whole unit temperature defect	-21
whole unit temperature material	-20
whole unit temperature part	-13
whole unit temperature size	-23
whole unit temperature word	-12
whole unit voltage defect	-48
whole unit voltage material	6
whole unit voltage part	83
whole unit voltage verbish	-10
whole unit voltage word	-33
whole unit volume material	12
whole unit volume part	37
whole unit volume surface	-17
whole unit volume word	-50
whole use buy	-17	21
whole use have	34
whole use measure	8	-10	-20
whole use move	-12	-8
whole use need		-8	-10
whole use other	-6
whole use say		20	25
whole use see	-12	-8	-21
whole use use	-7	-32
whole use work		-7	-8
whole where +1	-20	-7
whole where -1		-7
whole where -2	-6
whole where -3	-13		-9
whole where -4	-14		-14
whole where here-after	10	-8
whole where here-before	19	8
`;
