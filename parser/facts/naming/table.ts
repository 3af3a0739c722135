/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-10
after at area		61
after at defect		-23
after at fixture	-10
after at material		6
after at part	10	7
after at surface	10	25
after at verbish		-18
after behind defect		-17
after behind fixture		-46
after by defect		-37
after by fixture	-12
after by part		59
after by word	-18	12
after down defect		-12
after down word	-9
after end defect		-17
after for defect		-19
after from defect		29
after from word		37
after in area		-7
after in defect		-10
after in fixture		-27
after in material		44
after in part		70
after in surface		35
after in verbish		-18
after in word	-10
after mark defect		-9
after of defect		-31
after of material	53
after of word	8
after off part		82
after off word	-10	-24
after on defect		-21
after on fixture		32
after on material	-10	93
after on size	-8
after on surface		42
after on tells	-10
after on word	-12	-35
after out defect		-7
after out material		33
after out surface		15
after over defect		-14
after over size	-9
after quantity area		14
after quantity defect		-37
after quantity fixture		35
after quantity material		23
after quantity part		56
after quantity size		55
after quantity surface		-37
after quantity tells		-34
after quantity verbish		33
after quantity word		-9
after term area		22
after term defect	-7	-26
after term finish		-34
after term fixture	-9	37
after term material		-13
after term part	59	39
after term surface	-16	8
after term verbish	-14	18
after term word	15	17
after through defect		-12
after to defect		-23
after up defect		-12
after with defect		-12
after word area	-15	51
after word defect	-9	-34
after word finish		-14
after word fixture		30
after word material	14	53
after word part	-12	30
after word size	14	-20
after word surface		36
after word tells		-27
after word tool		-18
after word verbish		14
article a	-10	-20
article none		-16	-19
article other	-13	-8	-18
article the	13	31	32
behind about +1		-11
behind about -1		-37
behind about -2		-33
behind about -4		-9
behind about here-before		76
behind above +1	-13
behind above -1	44
behind above -2	-17
behind above here-after	-7
behind above here-before	-36
behind across +1	-22
behind across -1	59
behind across -2	-38
behind across -4	-9
behind after +1	-18
behind after -1	11
behind after -2	-32
behind after here-before	61
behind at +1	-22	-28
behind at -1	-18	11
behind at -2	30	-22
behind at -3		-21
behind at -4	-18	-26
behind at here-before	24	65
behind behind +1		-25
behind behind -1		63
behind behind -2		-27
behind behind -3		-10
behind behind here-after		-17
behind below +1	-13
behind below -1	-19
behind below -2	31
behind below here-before	12
behind by +1	-22
behind by -1	-12	-36
behind by -2	-13	-62
behind by -3		-26
behind by -4		14
behind by here-after	-10	15
behind by here-before	52	76
behind deep +1	-8
behind deep -1	9
behind deep -3	-62
behind deep -4	-20
behind deep here-after	-14
behind deep here-before	52
behind down +1	-8	-28
behind down -1		-53
behind down -2		13
behind down here-after	-21	36
behind down here-before	23	37
behind end +1	-22
behind end -1	13	17
behind end -2	-16	-11
behind end -3	-6
behind end -4	-15	-17
behind end here-after		-17
behind end here-before	37	19
behind for +1	-22	-26
behind for -1	49	93
behind for -2	-39	57
behind for -3	42	-40
behind for -4	-28	-19
behind for here-after	-24	-87
behind for here-before		-7
behind from +1	-16	-41
behind from -1	25	-27
behind from -2	-17	-24
behind from -3	-31
behind from -4	-17	-21
behind from here-after	-6	25
behind from here-before	48	60
behind high +1	-27
behind high -1	7
behind high -2	27
behind high -3	-31
behind high here-before	31
behind in +1	-13	34
behind in -1	12	-7
behind in -2		-19
behind in -3	17	-27
behind in -4	-20	-34
behind in here-after	-8
behind in here-before		31
behind long +1	-19
behind long -1	13
behind long -2	-31
behind long -3	8
behind long -4	-22
behind long here-after	-9
behind long here-before	52
behind low +1	-12
behind low -1	25
behind low -2	-17
behind low -4	-21
behind low here-before	34
behind mark +1		-9
behind mark -1		-39
behind mark -2		67
behind mark -3		-7
behind mark -4		-13
behind mark here-after		-32
behind mark here-before	32
behind number +1		-36
behind number -1		12
behind number -3		-20
behind number -4		-32
behind of +1	-36	-59
behind of -1	21	7
behind of -2	-48	28
behind of -3	-40
behind of -4	-15
behind of here-after	41	-31
behind of here-before	40
behind off +1	-18	-23
behind off -1	8	-17
behind off -2	-15	-12
behind off -3		-44
behind off -4	-26	54
behind off here-after	-10	45
behind off here-before	51	-36
behind on +1		-26
behind on -1	13
behind on -2		8
behind on -3	7	-16
behind on -4	-12	-32
behind on here-after	-16	9
behind on here-before		38
behind out +1		9
behind out -1	-15	-21
behind out -2		-44
behind out -3		21
behind out -4		-18
behind out here-after		-10
behind out here-before		67
behind over +1	-20
behind over -1		-28
behind over -2	-26
behind over -3	8
behind over -4	-16
behind over here-after	-15	41
behind over here-before	46	8
behind quantity +1		-10
behind quantity -1	14
behind quantity -2	-26
behind quantity -3		-19
behind quantity -4	-7	-15
behind quantity here-after	-10	14
behind quantity here-before	23	23
behind short +1	-13
behind short -1	-20	-26
behind short -2	-56
behind short -3	-20	69
behind short -4	24
behind short here-after	41
behind short here-before	44
behind tall +1	-25
behind tall -1	-49
behind tall -4	34
behind tall here-before	24
behind term +1	-19	-25
behind term -1	11
behind term -2	18	-10
behind term -3	-22	-25
behind term -4	-25	-24
behind term here-after		23
behind term here-before	32	61
behind thick +1	-24
behind thick here-before	-85
behind through +1		-14
behind through -2		-21
behind through -4		-23
behind through here-after		41
behind through here-before		-11
behind time -2		-7
behind to +1	-20	-23
behind to -1	29
behind to -2	14
behind to -3	-30	-28
behind to -4	-26	-8
behind to here-after	-14	-34
behind to here-before	26	76
behind toward -1	-15
behind toward -2	64
behind toward here-after	-16
behind under +1	-22	25
behind under -1	-44
behind under -2	18	16
behind under here-after		-38
behind under here-before	60	12
behind up +1	-26	-14
behind up -1		-40
behind up -2	76	-26
behind up -3	-28
behind up -4	-30	-17
behind up here-after		41
behind up here-before	-18	40
behind wide +1	-14
behind wide -1	-15
behind wide -2	-9
behind wide -3	-11
behind wide -4	-15
behind wide here-before	51
behind with +1	-8	-20
behind with -1	-34	33
behind with -2	33	-22
behind with -3	-9	-6
behind with -4	-12	-11
behind with here-after	-12	-31
behind with here-before	38	28
behind word +1	-14	-14
behind word -1	-12	-9
behind word -2	8
behind word -3		-12
behind word -4	-22	-11
behind word here-after		19
behind word here-before	37	15
behind-verb		-7	6
between 	26	24
between about	-43
between and	-87
between are	17	40
between at	11
between by	-22
between cut	52
between get		60
between get a		34
between has a		38
between have		23
between is	45	17
between just		15
between maybe	9
between of	23
between on	-47
between only	44	37
between read	17
between run	32
between say	-29
between sit	35
between still		16
between the		-44
between to	53
between want	25
between were		22
carried	40
carried -1 none	15
carried -1 person	53
carried -1 pointer	57
carried -1 tells	71
carried -2 none	28
carried -2 pointer	74
carried -2 tells	87
carried -3 none	21
carried -3 own	8
carried -3 pointer	40
carried -4 none	-31
carried -4 own	11
carried -4 pointer	34
carried here-before none	40
carried here-before own	36
carried here-before pointer	26
carried here-before tells	-13
counted bare		17	13
counted count	-14	17	34
counted current	-10		-14
counted length	-15		-22
counted pack	-8	-15	12
counted percent	-7	10
counted power	-12
counted pressure	-13	-37	-17
counted slope	-8
counted time	7	-33	-31
counted voltage		-28
counted volume	-11	-14
does ask fixture			22
does ask material			-44
does ask surface			-48
does ask verbish			-15
does be area			-12
does be defect			-30
does be fixture			40
does be part			-20
does be size			-33
does be surface			-11
does be tells			-30
does be tool			29
does be verbish			37
does be word			8
does blow part			63
does blow word			-43
does bring defect			-13
does call defect			-29
does call material			48
does call surface			8
does call word			-38
does change area			32
does change material			18
does change word			-43
does clean defect			-17
does clean material			-24
does clean part			31
does clean word			17
does come defect			-25
does come fixture			-24
does come material			-20
does come part			33
does come surface			-26
does come verbish			60
does come word			11
does cut area			-22
does cut defect			23
does cut fixture			13
does cut part			-28
does cut size			-29
does cut surface			25
does cut verbish			-21
does dig word			41
does do fixture			54
does do material			-42
does do part			44
does dry material			-96
does fill area			-26
does fill defect			84
does fill fixture			-30
does fill material			37
does fill surface			-9
does fill word			-41
does flip word			-16
does flush part			-27
does flush word			-27
does fre word			17
does get area			-52
does get defect			-47
does get finish			-32
does get fixture			45
does get material			40
does get part			37
does get surface			-18
does get tool			-10
does get verbish			-20
does get word			9
does glue area			-11
does glue surface			-33
does glue word			-30
does go area			39
does go defect			-27
does go part			29
does go surface			-7
does go verbish			-47
does go word			-11
does hang area			-23
does hang fixture			66
does hang word			-39
does have area			-17
does have defect			57
does have fixture			-21
does have material			-10
does have part			35
does have surface			-19
does have verbish			-13
does have word			-33
does hit defect			-21
does hit surface			94
does i'll material			-43
does leave material			-16
does leave part			-40
does leave word			8
does let fixture			84
does let material			-23
does let surface			-10
does let word			36
does look defect			-15
does look material			-33
does look part			58
does look word			-19
does make material			-26
does move area			10
does move material			-26
does move part			10
does move surface			-41
does move word			21
does need defect			-17
does need fixture			-20
does need material			22
does need part			46
does need verbish			-20
does need word			12
does open defect			49
does open material			-10
does open part			-18
does open word			-11
does order word			-10
does patch surface			-40
does plane fixture			45
does plane surface			-38
does plane word			-42
does plug word			73
does pull defect			-26
does pull material			-7
does pull surface			-14
does pull word			-78
does put area			-18
does put finish			-24
does put fixture			22
does put material			-11
does put part			57
does put surface			-20
does put verbish			-33
does put word			-38
does replace area			-43
does replace defect			-20
does replace material			9
does replace surface			-25
does reset defect			-19
does reset word			-30
does rip defect			40
does rip material			-49
does run defect			57
does run fixture			33
does run material			-85
does run part			26
does run word			-31
does sand defect			10
does sand material			-73
does sand surface			94
does sand verbish			14
does sand word			-74
does say area			-21
does say fixture			41
does say part			28
does say surface			-9
does say word			-27
does seal defect			-8
does seal surface			75
does seal word			-60
does see area			-31
does see fixture			-40
does see material			12
does see surface			59
does see word			24
does set defect			-13
does set material			53
does set word			17
does shim defect			-15
does shim word			14
does sister material			141
does sister word			-53
does sit material			46
does sit word			-44
does snug part			16
does snug word			33
does splice defect			-30
does splice material			17
does stick word			-15
does swap area			-20
does swap defect			-29
does swap fixture			-55
does swap material			30
does swap part			77
does swap surface			-45
does swap verbish			-18
does swap word			35
does take area			-23
does take defect			-29
does take fixture			39
does take material			13
does take part			8
does take surface			-50
does take word			40
does tape defect			-25
does tape material			12
does tape word			48
does tighten defect			-22
does trim defect			-23
does trim material			27
does trim word			-14
does turn defect			-18
does turn part			13
does want defect			-39
does want fixture			-39
does want material			66
does want surface			-18
does want word			-35
far after 1	-15	28
far after 13+	-24	-16
far after 2	-11
far after 5-7	-11	-6
far after 8-12	-15	-10
far before 0	27	23	-31
far before 1	18	13	-20
far before 13+	-23	-26
far before 2	22	30	-11
far before 3-4	25	16
far before 5-7	13		7
far before 8-12			13
flawed	14	-10	39
frame copula +1	-15
frame copula -2	-8
frame copula -3	-11	-12
frame copula -4	-12	-20
frame copula defect			-14
frame copula finish			-18
frame copula fixture			26
frame copula here-before	40	25	-10
frame copula material			18
frame copula part			28
frame copula size			-63
frame copula surface			11
frame copula tells			-32
frame copula tool			-19
frame copula verbish			21
frame copula word			-32
frame imperative +1	-37	16
frame imperative -1	16	6
frame imperative -2	-36	18	9
frame imperative -3	23	-45	24
frame imperative -4	-7	-58	-23
frame imperative defect			-14
frame imperative finish			-37
frame imperative fixture			35
frame imperative here-after		25
frame imperative here-before	34	22	-8
frame imperative part			30
frame imperative size			28
frame imperative tells			-57
frame imperative tool			-22
frame imperative verbish			-16
frame imperative word			-10
frame modal +1	-29	18
frame modal -1	53	-28	-8
frame modal -2	22	15	33
frame modal -3	-22	12	12
frame modal -4	-6	-59	-26
frame modal area			-7
frame modal defect			-8
frame modal finish			-20
frame modal here-after	-32	26
frame modal here-before	-20		-27
frame modal part			47
frame modal size			46
frame modal surface			13
frame modal tells			-36
frame modal tool			-18
frame modal verbish			-16
frame modal word			-18
frame none +1	-21	-24
frame none -1	13	15	32
frame none -2			10
frame none -3	-11	-13	-18
frame none -4	-21	-14	-19
frame none area			45
frame none defect			-24
frame none finish			-6
frame none fixture			-14
frame none here-after		8
frame none here-before	40	34	-55
frame none material			9
frame none part			12
frame none tells			-28
frame none verbish			-9
frame owed +1	-32	-18
frame owed -1	7	-53	28
frame owed -2		-44	18
frame owed -3		-33	-8
frame owed -4	-14	6	-34
frame owed area			-12
frame owed defect			-22
frame owed finish			-31
frame owed fixture			21
frame owed here-after	-22	44
frame owed here-before	57	66	-18
frame owed material			17
frame owed part			40
frame owed surface			18
frame owed tells			-34
frame owed tool			-42
frame owed verbish			-17
frame owed word			-18
frame past +1	-20	-16
frame past -1			39
frame past -2	9	-14
frame past -3	-19	-8	-20
frame past -4	-19	-18	-46
frame past area			-14
frame past defect			-23
frame past finish			-18
frame past fixture			19
frame past here-after		22
frame past here-before	45	31	12
frame past material			22
frame past part			43
frame past tells			-6
frame past tool			-13
frame past verbish			-25
frame past word			-15
frame past work			-18
frame present +1	-23	-16
frame present -1	9	13
frame present -2		-7	-7
frame present -3	22
frame present -4	-25
frame present area			-16
frame present defect			8
frame present fixture			52
frame present here-after	-15	-9
frame present here-before	27	19	37
frame present part			-29
frame present size			20
frame present surface			12
frame present tells			-34
frame present tool			28
frame present word			-21
heading	-12	9	-15
heading +1	-19	-19
heading -1	-27		-30
heading -2	-13	18
heading -3		33	-19
heading -4	-9	8
heading here-after		-21
heading here-before	33	13
is-flaw	-15
join	-13	-12	-16
join +1	-13		-14
join +1 area	-6		-7
join +1 finish			11
join +1 fixture			-14
join +1 material	-7
join +1 part	-10
join +1 size			9
join +1 tells	6		-13
join +1 tool			-17
join +1 word			-7
join +1 work			-10
join -1	-6
join -1 area			21
join -1 defect	-10		-7
join -1 finish			-20
join -1 fixture	7		17
join -1 material	-7
join -1 part	9
join -1 surface	-7
join -1 tells			-10
join -1 verbish	-6
join -1 word			-8
join -1 work	-7
join -2	-7		-15
join -2 area			-13
join -2 defect	-8
join -2 material			-8
join -2 size			-9
join -2 surface	-8
join -2 verbish			-6
join -2 word			-7
join -2 work	-11
join -3	-14		-16
join -3 area			-14
join -3 defect	-8		-7
join -3 finish	-6		-10
join -3 part	-8
join -3 size	-11		-13
join -3 surface			-13
join -3 tool	-9		-13
join -3 verbish	-7		-8
join -3 work	-8		-17
join area	-9
join area+area	-6	-19	-25
join area+finish			8
join area+fixture			-7
join area+size	-6	7	7
join area+surface		14
join area+tells		46	38
join area+tool		-17	-8
join defect	-12
join defect+area		-7
join defect+size	-7
join defect+surface			9
join finish			-10
join finish+finish			-12
join finish+fixture		9	-7
join finish+part	10	20
join finish+size	-16
join finish+surface			7
join finish+tells	-9
join finish+tool	-9
join finish+verbish			-7
join finish+word		-8	-7
join fixture		6
join fixture+area		29
join fixture+defect		-9
join fixture+finish	-11	50	-15
join fixture+fixture		17	7
join fixture+material			-6
join fixture+part	-9	7
join fixture+size	14	24	9
join fixture+tells	7	27	9
join fixture+tool		-14	-12
join fixture+verbish		-14
join fixture+work	-9		-12
join heading	-13
join leads above	-6
join leads along	15	-19	-19
join leads around		14	16
join leads at quantity to	-9
join leads at term verb		-9
join leads at word	7	15
join leads at word term		-6	-6
join leads at word verb		-13
join leads at word word		-15	9
join leads behind	20
join leads behind word word	16	26	10
join leads by		14	18
join leads by term	10
join leads by term quantity		10
join leads by term word		7
join leads down	9		-9
join leads for		6
join leads for word		19
join leads for word term	-10	-10
join leads from	-12	7
join leads in	6
join leads in term of		-7
join leads in word	7
join leads into	-9
join leads mark			-6
join leads near		19
join leads of quantity	-36
join leads of quantity word	-10
join leads of term		13
join leads of term word	-10	-6
join leads of word		-14
join leads of word verb		-19
join leads off			-11
join leads off term word		12	38
join leads on term term	-8	-6	7
join leads on term verb		13
join leads on term word		7
join leads on word term		-12	-12
join leads on word word		-8	-7
join leads out	7		-8
join leads out of		-10
join leads out on		-8
join leads over	10		9
join leads quantity by quantity			9
join leads quantity from		-7
join leads quantity of		-30
join leads quantity of quantity			-9
join leads quantity of word		17	13
join leads quantity off			-7
join leads quantity on		-9
join leads quantity term word		10
join leads quantity verb word		-27
join leads quantity word quantity		8	6
join leads quantity word word		-8	-8
join leads term	9
join leads term at	6
join leads term by	-21	-8
join leads term quantity at		-13
join leads term term verb		-8
join leads term term word		-8
join leads term verb			9
join leads term verb by		10
join leads term verb term		6
join leads term verb word	9
join leads term word	7		-11
join leads term word verb		-6
join leads term word word		-12	-8
join leads time		33	22
join leads time before word		-10
join leads to verb			-11
join leads under		7
join leads under word word		-10
join leads up in		-8
join leads verb at			7
join leads verb behind		11	-7
join leads verb by	6	-8
join leads verb off		22
join leads verb on		-17
join leads verb on word		6
join leads verb out		-13
join leads verb out quantity			-20
join leads verb quantity		-15
join leads verb quantity by	-9
join leads verb quantity of		-25	-20
join leads verb quantity on		12
join leads verb quantity term		50
join leads verb quantity to	-9
join leads verb quantity word	19	15
join leads verb term		-9
join leads verb term in		-7
join leads verb term term		-7
join leads verb term word	9
join leads verb to		-11
join leads verb under		37
join leads verb verb down	-7	-11
join leads verb verb in		8
join leads verb verb out		-7	-11
join leads verb verb term		-17
join leads verb verb verb	-6
join leads verb verb word		-8	-12
join leads verb with		10	27
join leads verb word			-7
join leads verb word in		-10
join leads verb word quantity	7
join leads verb word term		8
join leads verb word verb		-8
join leads with quantity		-10
join leads word at			-17
join leads word in			6
join leads word in verb	-9
join leads word of	12	-8
join leads word on	14	7
join leads word on quantity			-7
join leads word quantity			-17
join leads word quantity of		-11	29
join leads word quantity verb		-8
join leads word quantity word		-11	-8
join leads word term	14
join leads word term at	10	10
join leads word term by	-6
join leads word term quantity	-6	-10
join leads word term verb	-11	11	10
join leads word term word			-7
join leads word to verb	15
join leads word verb	-6
join leads word verb about		8
join leads word verb at		-11
join leads word verb in	-7		-8
join leads word verb on	7		7
join leads word verb quantity		-10	-9
join leads word verb term	-7	-12	-6
join leads word verb word		-14	21
join leads word with		-7
join leads word word quantity	-12	-10	-9
join leads word word term		-16	-7
join leads word word to		-11
join leads word word verb		-16
join leads word word word			7
join links 	6	-7
join links above	-7
join links along	8	-36	-39
join links around		24	22
join links at	19	13	7
join links at quantity	10		9
join links at quantity to	-32
join links at quantity word		-14
join links at term word	55		25
join links at word	53	10
join links at word term		-18
join links at word verb		-22
join links at word word	-26	-22	52
join links behind	15	7	54
join links behind term word		-8
join links behind word word	19	34	10
join links by	8	24	39
join links by term	7		14
join links by term quantity		8
join links by term verb	15		16
join links by term word	25	9	6
join links down	29		-9
join links for		21
join links for quantity	-9
join links for word		16
join links for word term		-14
join links from	-8	11
join links in	20	25	34
join links in quantity		6	14
join links in term		19	38
join links in term of		-6
join links in term verb	16	-12	8
join links in term word	24	-9	6
join links in verb behind		14
join links in word			-8
join links in word term	14
join links in word verb	-14	-10
join links in word word		-8
join links into word at		8
join links mark	16		-16
join links near	12	41	32
join links of	35	27	32
join links of quantity	-22		40
join links of quantity word	-16
join links of term		9
join links of term verb	-31		42
join links of term word	-23	-12	-19
join links of verb word		-8
join links of word verb		-20	-10
join links off		8
join links on		12	31
join links on quantity	8	11	16
join links on term	-39	-10
join links on term term		-7	17
join links on term verb		42	-18
join links on term word	43	21	23
join links on verb word	-7
join links on word		-10	-10
join links on word quantity			-27
join links on word term		-12	-21
join links on word verb	-10
join links on word word	-17	6	-18
join links out of		-11
join links out of word		-10
join links out on		-11
join links over	6	21
join links over term word		-7	51
join links quantity at	29	-21	-24
join links quantity by quantity	-28	-27	-42
join links quantity from	-43	-27
join links quantity in	-8		-10
join links quantity mark		-10
join links quantity of	25	-19
join links quantity of quantity			-10
join links quantity of term	18
join links quantity of word		29
join links quantity on	23	-17
join links quantity over	24
join links quantity term to	-17
join links quantity term word	-12	15
join links quantity verb quantity	15	9
join links quantity verb word		-17
join links quantity word	7		7
join links quantity word at	-24	-8
join links quantity word to	-18
join links quantity word word	-15	-9	-14
join links term	13		9
join links term at	27	-7	20
join links term by	-9	-7
join links term on		-6
join links term over		-9
join links term quantity at	-29	-8
join links term term	-13
join links term term word		-10
join links term verb		15	14
join links term verb by		7
join links term verb term		-9
join links term verb word	11
join links term word	18	-15	-29
join links term word on		-9
join links term word verb		-11	-7
join links term word word		-15	-28
join links through	9
join links time		27	18
join links time before word		-9
join links to		11
join links to term word	27	-7
join links to verb			-10
join links under		36	56
join links under word word		-15
join links up		19
join links up in		-12
join links verb	17	-6
join links verb at			70
join links verb at quantity	-9	-17	-8
join links verb behind	-18	-24	-47
join links verb by	30	-25	80
join links verb from		-12
join links verb in		-8	-19
join links verb mark		28
join links verb of	-9	18	-7
join links verb off		11
join links verb on	17	-7	8
join links verb on word		-12
join links verb out	26	-24
join links verb out of		8
join links verb out quantity	-29	-23	-33
join links verb quantity	24	-14
join links verb quantity at	-8	-15	-23
join links verb quantity from		-20
join links verb quantity in		-8
join links verb quantity of	-10	-21
join links verb quantity off	48	-7
join links verb quantity on	8	25
join links verb quantity to	-11
join links verb quantity verb	23	-8
join links verb quantity word	18		-8
join links verb term in			18
join links verb term of			10
join links verb term to	14	-16
join links verb term verb			7
join links verb term word	-13	-24	-13
join links verb to	9	-14	-19
join links verb under		15
join links verb verb		-10	-7
join links verb verb at		-16
join links verb verb by		-8
join links verb verb down	-40	-32
join links verb verb in		27
join links verb verb on		-17
join links verb verb out		-18	-16
join links verb verb quantity	10
join links verb verb term		-14
join links verb verb verb			18
join links verb verb with	-6	-16
join links verb verb word	8	14	13
join links verb with		-12	30
join links verb word	-16	-13	-14
join links verb word in		-20
join links verb word on		-14	24
join links verb word quantity	39		12
join links verb word term	38	-12
join links verb word verb	-41	-13	-13
join links verb word word	-31	-14
join links with	16	-6
join links with quantity	26	-14
join links word at		-9
join links word at quantity	7
join links word in			-8
join links word in at		-30
join links word in verb	-22
join links word on		8
join links word on quantity			-15
join links word quantity	-6	-9	-10
join links word quantity at	13
join links word quantity of	-6	-15	24
join links word quantity off	-9
join links word quantity term	-27	-11	23
join links word quantity verb	15	-7
join links word quantity word	-31	-20	-14
join links word term	28	-6
join links word term at	26	42
join links word term by	-18	-15
join links word term in		-8
join links word term on		-7
join links word term quantity	-26		-10
join links word term verb	-22		-17
join links word term word	9	-18	-26
join links word to verb	42
join links word verb		-7	8
join links word verb about	-18	12
join links word verb at		-28	7
join links word verb from		-16
join links word verb in	21		-28
join links word verb on	18	17	39
join links word verb quantity	37	-15	-21
join links word verb term		-9
join links word verb to	18	-12	11
join links word verb up			13
join links word verb verb	-11
join links word verb word	-10	7
join links word with	-6
join links word word			21
join links word word by	8
join links word word in			-28
join links word word mark	-10
join links word word quantity	-33	-10
join links word word term	-21	-14
join links word word to	-11	-8
join links word word verb		-20	-9
join links word word word		17	13
join material		-11	6
join material+area	-6	-8
join material+defect		-8
join material+finish	8	-14	-10
join material+fixture		15	19
join material+material			9
join material+part			8
join material+size		-19	-7
join material+tells		-13	-13
join material+tool		-11
join material+verbish		-15
join material+word		-8
join material+work			-8
join part			-7
join part+defect	-8	-8	-12
join part+finish	12	13
join part+fixture		14	16
join part+part		7	-7
join part+size	11	22	-11
join part+surface		6	-8
join part+tells		-26	-17
join part+work			-12
join same-after	21	-6	20
join same-after area		7	20
join same-after defect	11	-12
join same-after finish			8
join same-after fixture	13	12	27
join same-after material	17		14
join same-after part	10	9	16
join same-after size	27
join same-after surface	17		8
join same-after tells	-19		32
join same-after tool	6	-12	7
join same-after word		-8
join same-before area	-7
join same-before size	11
join same-before tells	-7		-8
join same-before verbish		-7
join same-before work		-7
join size	10
join size 1			6
join size 2	-12	-17	-29
join size 3			-10
join size+area	7	8	16
join size+defect	-12	-8	-7
join size+finish	-26		-10
join size+fixture	20	17
join size+material		-12	-7
join size+size	-10		11
join size+surface	7
join size+tells	9		-9
join size+tool	-9		7
join size+verbish	8	-8	13
join size+word			-7
join sizes 1+1		6	14
join sizes 1+2	-9	-9	-14
join sizes 1+3	8		11
join sizes 2+1		-16	-23
join sizes 2+2	-13		-12
join sizes 2+3	-8		-11
join sizes 3+1			-6
join sizes 3+3	-12	-43	-25
join surface			7
join surface+area	-7	15	31
join surface+defect	6	-7
join surface+finish		19	41
join surface+fixture	12		6
join surface+part		16
join surface+surface		16	-6
join surface+tells		-8	-6
join surface+verbish	-8	11	-8
join surface+word	-6		-7
join tells	-7	-8	-12
join tells+finish	-18
join tells+fixture	15	13	7
join tells+part	-7	-15	-6
join tells+tells			-15
join tells+word		-10
join tool	-14	-9
join tool+area	7	-30	-6
join tool+defect	-7		-7
join tool+finish	-14		25
join tool+fixture		-10	-14
join tool+surface	-12
join verbish	-9	-11	-11
join verbish+area			18
join verbish+finish		-7	-12
join verbish+fixture	7	-9
join verbish+material		-10
join verbish+size	-8	-8	8
join verbish+surface		14
join verbish+tells	-8	-10
join verbish+tool	-6	7
join verbish+verbish		-20	-13
join verbish+word			-8
join word			-13
join word+finish		-8	-7
join word+material			-6
join word+size	7
join word+tells	-10	-9
join work	-12		-18
join work+fixture	-12		-7
kind +1 area	-14	-8
kind +1 defect	-11	-9
kind +1 finish	-9	-15
kind +1 fixture	-16	11
kind +1 material	-13
kind +1 part	-25	7
kind +1 size	-20
kind +1 surface	-19	-12
kind +1 tells	-8	-15
kind +1 tool	-11	-21
kind +1 verbish	-6	-24
kind +1 word	-11	-10
kind +1 work	-7
kind -1 area	-26	13	11
kind -1 defect	-33	-32	-25
kind -1 finish	-40		-25
kind -1 fixture	22	44	40
kind -1 material	40		11
kind -1 part	21		72
kind -1 size	28		32
kind -1 surface		16	10
kind -1 tells	-33	-56	-27
kind -1 tool	-14	-8	6
kind -1 verbish	-24
kind -1 word	-8	-9
kind -2 area	-26	-14
kind -2 defect	-18	-16	-12
kind -2 finish	-33	-31	-10
kind -2 fixture	32	10	34
kind -2 material		-11	22
kind -2 part			11
kind -2 size	20	6	14
kind -2 surface		14
kind -2 tells	-23	9	-51
kind -2 tool	-26	-40	-54
kind -2 verbish		-10	-22
kind -2 work	-25	-13	-24
kind -3 area		12
kind -3 defect	-8	-9	-9
kind -3 finish	-10	-6	-44
kind -3 fixture		12	15
kind -3 material		-6	12
kind -3 part		-11	19
kind -3 size	-39	-21	-60
kind -3 surface	-9	-18	30
kind -3 tells	-16	-6	-44
kind -3 tool	-18	29	-11
kind -3 verbish		-10	6
kind -3 word	-9	-12	-25
kind -3 work	38	-8
kind -4 area		-13	-7
kind -4 defect	-7		-12
kind -4 finish		-13	-15
kind -4 fixture	-11		-19
kind -4 material	-15		-7
kind -4 part		-15	-28
kind -4 size		-14	-8
kind -4 surface	-20	-9
kind -4 tells			-22
kind -4 tool	-7	-14	-28
kind -4 verbish	-7
kind -4 word		-12	-8
kind -4 work	-10	-9	-13
kind area	-14
kind defect	-17	-21	-14
kind finish	-12	-17	-23
kind fixture	12	25	20
kind here-after area	-10	50
kind here-after defect	-8	-22
kind here-after finish	12	-15
kind here-after fixture	-21	12
kind here-after material	13	36
kind here-after part		38
kind here-after size	-7	12
kind here-after surface		23
kind here-after tells	-11	-45
kind here-after tool		8
kind here-after verbish	-11	16
kind here-after word	-8
kind here-before area	-18	-19	-61
kind here-before defect	9	50	43
kind here-before finish	25		18
kind here-before fixture	32	32	42
kind here-before material	35	41	11
kind here-before part	60	42	35
kind here-before size	36	15
kind here-before surface	40		-37
kind here-before tells	-13		-19
kind here-before tool	-19	43	23
kind here-before verbish	16	-19	-49
kind here-before word	9	-11	-28
kind material	15	18	14
kind part	13	18	28
kind size	14
kind tells	-18	-21	-38
kind tool	-17		-15
kind verbish		-6	-11
kind word	-10	-18	-18
kind work		-18	-35
lead a -1		-12
lead a -2	45	-31
lead a -3	-36	-18
lead a -4	-31	-12
lead a here-after	39	26
lead a here-before	-34	46
lead about -3	-25
lead about -4	-24
lead about here-after	25
lead about here-before	48
lead area -1		-38
lead area -2		12
lead area -3		-15
lead area -4		-14
lead area here-before	-10	29
lead at -1	-17
lead at -2	-14
lead at -3	-18
lead at here-after	-12
lead at here-before	63
lead by -2	-12
lead by here-before	32
lead defect -1	-21
lead defect -3	-16
lead defect -4	-16
lead defect here-before	42
lead down -1	14
lead down -2	-56
lead down here-after	-17
lead down here-before	49
lead every -1	-63
lead every -2	-58
lead fixture -1	-45	-15
lead fixture -2	-9	13
lead fixture -3	-18
lead fixture -4	-6	-11
lead fixture here-after	-10	-7
lead fixture here-before	60	25
lead for -1	31
lead for -2	-28
lead for -3	-21
lead for -4	-19
lead for here-before	32
lead in -1	-13
lead in -2	24
lead in -3	34
lead in -4	-25
lead mark -1	30
lead mark -2	-15
lead mark -3	-27
lead mark -4	-13
lead mark here-after	-9
lead mark here-before	29
lead material -1	13	15
lead material -2	-24	-16
lead material -3		-13
lead material -4	-10	-17
lead material here-after		-19
lead material here-before	13	23
lead number -2		63
lead number -3		-13
lead number -4		-55
lead number here-after		-34
lead number here-before		48
lead of -1	26
lead of -2	-27
lead of -3	-28
lead of -4	11
lead of here-after	-12
lead of here-before	28
lead out -1	26
lead out -2	-62
lead out -3	39
lead out -4	-39
lead out here-after	-11
lead out here-before	61
lead over -1	-11
lead over -2	7
lead over -3	31
lead over -4	-9
lead part -1	-25
lead part -2	-18	-9
lead part -3	-28
lead part -4	14
lead part here-after		-21
lead part here-before	45	29
lead past -2	26
lead quantity -1		22
lead quantity -3		-23
lead quantity -4		-10
lead quantity here-after		-13
lead quantity here-before	20	75
lead role -1		-89
lead role -2		-42
lead role -3		-28
lead role -4		44
lead role here-after		114
lead size -1	-18	-57
lead size -2		-22
lead size -3		-10
lead size -4	-14
lead size here-after	-10	46
lead size here-before	35	27
lead surface -1		11
lead surface -3	-23	-9
lead surface -4	-13	-16
lead surface here-after	-9	-30
lead surface here-before	32	19
lead tells -1		-46
lead tells -2		-21
lead tells here-after		9
lead that -1		-30
lead that -4		37
lead that here-after		22
lead the -1		-10
lead the -2		-17
lead the -3		-24
lead the -4		-42
lead the here-after		52
lead the here-before		-18
lead to -1	21	19
lead to -2	16	39
lead to -3	-12
lead to -4	-25
lead to here-after	-7	23
lead to here-before	20	-14
lead tool -1		-19
lead tool -3		-8
lead tool -4		20
lead tool here-before		12
lead up -1	43
lead up -2	-27
lead up -4	-20
lead up here-after	11
lead verbish -1		10
lead verbish -2	-7
lead verbish -4	-20
lead verbish here-after		-29
lead verbish here-before	43	24
lead with -3		-7
lead with -4		-29
lead with here-after	9	-15
lead with here-before		60
lead word -1	10	18
lead word -2	9
lead word -3	-15	-8
lead word -4	-14	-18
lead word here-after	-8	12
lead word here-before	27	26
lemma be object	-12	-14
lemma be subject	36	21
lemma be subject-late	-8	-7
lemma bend subject		34
lemma buzz object		-42
lemma buzz subject		35
lemma crack subject		71
lemma cut object	-10
lemma drill subject	40
lemma drip object		-25
lemma drip subject		42
lemma dump object		-13
lemma dump subject		26
lemma find object		107
lemma get object	-14	-17
lemma get subject		70
lemma go object	15	-12
lemma go subject	22	8
lemma hang object	18	-11
lemma hang subject	16
lemma have object		-18
lemma have subject	42	18
lemma have subject-late	-28	20
lemma hit object		-71
lemma hit subject		57
lemma hold object	32
lemma hold subject	70
lemma hum subject		-49
lemma leak subject		30
lemma leave object	67	19
lemma measure object	22
lemma measure subject	26
lemma measure subject-late	-9
lemma move object	-32
lemma need object	15	62
lemma need subject	25
lemma pull object		6
lemma pull subject		-17
lemma put object	-8	-20
lemma read object	-39
lemma read subject		20
lemma run object	-32	-17
lemma run subject	-52	38
lemma say object		120
lemma say subject	-9	-56
lemma see object		32
lemma show subject		-28
lemma sit object	36	-48
lemma sit subject	43	64
lemma stick object		-33
lemma stick subject	45	53
lemma strip subject		32
lemma take object		50
lemma trip object		-11
lemma turn subject		-17
lemma want object	49	-12
lemma want subject	-20
lemma weep subject		30
not-carried	-36
not-carried +1 none	-14
not-carried +1 own	-10
not-carried +1 pointer	-20
not-carried +1 tells	-19
not-carried -1 own	-23
not-carried -1 person	-48
not-carried -1 pointer	-13
not-carried -1 tells	-13
not-carried -2 none	-37
not-carried -2 own	-13
not-carried -2 person	-33
not-carried -2 pointer	-51
not-carried -2 tells	-45
not-carried -3 none	-7
not-carried -3 own	-14
not-carried -3 person	-27
not-carried -3 pointer	-15
not-carried -3 tells	-31
not-carried -4 none	-9
not-carried -4 own	-13
not-carried -4 person	-26
not-carried -4 pointer	-28
not-carried here-after pointer	7
not-carried here-before none	33
not-carried here-before own	32
not-carried here-before person	10
not-carried here-before pointer	28
not-carried here-before tells	-35
not-told		-19
not-told +1		-10
not-told -1		27
not-told -2		-7
not-told -3		-6
not-told -4		-11
not-told here-after		-22
not-told here-before		16
number many many			72
number many one			-62
number none many			16
number none one			-9
number one many			-9
number one one			7
opens-with +1	-42
opens-with -1	59	-13
opens-with -2	11	-15
opens-with -3	-27	-13
opens-with -4	-27	-32
opens-with here-after	-14	40
part +1 bare	-14
part +1 object	-15	-17
part +1 opens	-22	-11
part +1 subject	-18	9
part +1 subject-late	-7	-28
part -1 bare	-21	-8	-27
part -1 object	-14
part -1 opens	19	8	36
part -1 subject	35		39
part -1 subject-late	-9	11	21
part -2 bare	-12	-10	-9
part -2 object	-15	-10
part -2 subject	11		26
part -2 subject-late	8	28
part -3 bare	-17		-7
part -3 object	-12	-9	-10
part -3 opens	19	7	12
part -3 subject	-9	-11
part -3 subject-late		-22	13
part -4 bare	-8		-10
part -4 object	-11	-18	-19
part -4 opens		-6
part -4 subject	-15		-19
part -4 subject-late		-8	-29
part bare	-18	-13	-19
part bare area	-9	10	6
part bare defect	-14	-13	-29
part bare finish	-14
part bare fixture			-25
part bare material		8	-30
part bare part	-9	10	20
part bare size	-9		34
part bare surface	-31	-28	-13
part bare tells	-45	-7	-19
part bare tool	-6
part bare verbish		8	21
part bare word	-15	-24	-11
part bare work	-8	-37
part here-after bare		-21
part here-after opens		63
part here-after subject		73
part here-after subject-late	-23
part here-before bare		-6	-24
part here-before object	19	17	-9
part here-before opens	48	40	-47
part here-before subject	40	27	22
part here-before subject-late			-35
part object	-24	-17	-19
part object area	-13		-13
part object defect	-16	-18	-9
part object finish	-17	-27	-36
part object fixture	-11	27	17
part object material			-8
part object part	6	19	33
part object size	11		19
part object surface			7
part object tells	-18	-22	-22
part object tool	-15	-26	-7
part object verbish	-14	-14	-20
part object word	-18	-18	-22
part object work		-16	-8
part opens	19	16	16
part opens area			36
part opens defect		-15	12
part opens finish	-16		-25
part opens fixture	25	25	51
part opens material	30	22	25
part opens part	24	8	27
part opens size			-28
part opens surface	12	20	22
part opens tells	21	25	-25
part opens tool		11	-10
part opens verbish	21	14
part opens word		9	-16
part opens work	18	8	-29
part subject	22	17	22
part subject area	-28	26	-6
part subject defect	-20	-46	-70
part subject finish		10	33
part subject fixture	29	26	31
part subject material	11	15	33
part subject part	13	19	18
part subject size	25		-22
part subject surface	24	7	11
part subject tells	-22	-40	-71
part subject tool	-11	80	-38
part subject verbish		-8	-25
part subject word	11		13
part subject work	-16	-17	-20
part subject-late area	-16	-23	-19
part subject-late defect	-22		-37
part subject-late finish	-18	36	47
part subject-late fixture	10		-13
part subject-late material	15	32	50
part subject-late part		-21	-9
part subject-late size	36	6
part subject-late surface	-26	12	-25
part subject-late tool	-26	-25	23
part subject-late verbish		27	55
part subject-late word		-9	-22
points both -1			68
points both object			-34
points both subject			30
points em -2			24
points em -3			-13
points em -4			-23
points em bare			-50
points em here-before			17
points em opens			26
points em subject			14
points em subject-late			-8
points it -2			17
points it -4			-14
points it bare			-29
points it object			-19
points it opens			8
points it subject			27
points none -1			25
points none -3			-7
points none -4			-17
points none bare			-18
points none here-before			-9
points none object			-29
points none opens			24
points none subject			23
points one -1			43
points one -2			-25
points one -3			-19
points one -4			-21
points one bare			16
points one here-before			18
points one opens			-31
points one subject			7
points one subject-late			10
points that -1			36
points that -2			11
points that -3			22
points that -4			-61
points that bare			-26
points that here-before			-14
points that opens			27
points that subject			7
points that subject-late			-32
points them -1			83
points them -2			10
points them -3			-22
points them -4			-84
points them bare			-15
points them object			43
points them opens			-34
points them subject			-8
points them subject-late			-22
points they -1			15
points they -2			14
points they -3			-37
points they bare			24
points they here-before			-7
points they object			-46
points they opens			42
points they subject-late			10
points this -1			-43
points this -2			67
points this subject			-27
points those -2			28
points those -3			47
points those -4			-63
points those bare			40
points those object			-25
points those opens			37
points those subject			-21
points those subject-late			-10
prep about			-38
prep above	-20		-30
prep across	-17	-38	-31
prep after	-42	-47	-19
prep along	-41	10
prep around	-51	12	11
prep at	-26	-21	-28
prep before	-12	-13	-34
prep behind	-24	-19	-23
prep below	-10	-53	-19
prep between		46	-21
prep by	-39	-39	-67
prep down	-7	46	10
prep for	-28		-31
prep from	-27	-33	-52
prep here-after about		7
prep here-after along		56
prep here-after at		-18
prep here-after before	-20
prep here-after behind	29	-35
prep here-after below		-65
prep here-after by	-14	-28
prep here-after down		42
prep here-after for	-20	10
prep here-after from		-38
prep here-after in	-19	15
prep here-after into		-24
prep here-after near		-32
prep here-after of	17	7
prep here-after off		46
prep here-after on		15
prep here-after out		-10
prep here-after over	-9	-8
prep here-after past		-15
prep here-after to	-16	-37
prep here-after toward	-16
prep here-after under		-20
prep here-after up		26
prep here-after with	-11	-56
prep here-after without		-48
prep here-before along		-57
prep here-before at	-78	-31	8
prep here-before behind	-20	-10
prep here-before by	-79	-99
prep here-before for	-35	-9
prep here-before from	-82		20
prep here-before in	-15	-22	-31
prep here-before of		18	-26
prep here-before off	-47
prep here-before on	-36	-23	11
prep here-before over	-18	-31
prep here-before to	-42	-27	-21
prep here-before under	-48	-38
prep here-before with		-16
prep in	-18	-17	-28
prep into	-12	-23	-17
prep near	-49	-42	-53
prep of	-8	-6	-22
prep off	-16	22	16
prep on	-12		-6
prep other about		-11	-34
prep other above	-39		-22
prep other across	-7	-34	-31
prep other after	-43	-16	-18
prep other along	-30	21
prep other around	-36	-14	11
prep other at	-21	-18	-29
prep other before		-25	-34
prep other behind	-36		-23
prep other below		-9	-19
prep other between	-16		-21
prep other by	-29	-22	-64
prep other down	-14	30	10
prep other for	-25		-29
prep other from	-24	-33	-62
prep other in	-17	-22	-28
prep other into		9	-17
prep other near			-53
prep other of	-13	-14	-21
prep other off	-14	8	16
prep other on	-10	-7	-7
prep other out	-23	-21	-15
prep other over	-15	9	-23
prep other past		15
prep other through		-22	19
prep other to	-16	-24	-42
prep other toward	-18	-41
prep other under	-21	-14	-50
prep other up	16	-18
prep other with	-16	-19	-26
prep out	-34	-8
prep over	-17		-42
prep through	-36	27	19
prep to	-23	-27	-42
prep toward	-35	-77
prep under	-30	-25	-51
prep up	-8
prep with	-16	-28	-26
prep without		-43
rank after 0	-11
rank after 1	-7
rank after 2	-15
rank after 3	-14	-17
rank after 4	-17	-7
rank before 0	17	16	-12
rank before 1	17	10
rank before 2		-7	6
rank before 3	-7	-9	7
rank before 4	-22	-21	-7
says copula	10		9
says imperative	10	9
says modal	-12		-26
says owed		-7	6
says past	-12
says present	-8		-16
sentences -1	-37	-50	-55
sentences -1 bare	-20	-23	-33
sentences -1 object	-18	-22	-26
sentences -1 opens	-23	-36	-53
sentences -1 subject	-19	-24	-6
sentences -1 subject-late	-18	-19	-34
sentences -2	-30	-29	-55
sentences -2 bare	-11	-18	-27
sentences -2 object	-13	-15	-29
sentences -2 opens	-14	-16	-24
sentences -2 subject	-24	-10	-38
sentences -2 subject-late			-17
sentences 1	-18	-36
sentences 1 bare	-13	-32
sentences 1 object		-25
sentences 1 opens	-21	-37
sentences 1 subject	-20	-28
sentences 1 subject-late	-17	-22
size 1	-16	-29	-33
size 2	12	24	36
size 3	24	42	40
stands-off-after	-7	6
subject none +1	-21	-19
subject none -1	7
subject none -2	-7	-12
subject none -4	-19	-15
subject none here-after		9
subject none here-before	42	38
subject own +1	-9
subject own -1	-22
subject own -2	-11
subject own -3	-12	-12
subject own -4	-14	-18
subject own here-after	-8	-10
subject own here-before	45	27
subject person +1		16
subject person -1	35	-17
subject person -2	-33	-47
subject person -3	-38	8
subject person -4	42	21
subject person here-after	-13	10
subject person here-before	-16	-7
subject pointer +1	-34	-19
subject pointer -1	33	7
subject pointer -2	11
subject pointer -3	-10	-23
subject pointer -4	-26	-25
subject pointer here-after	-15	36
subject pointer here-before	29
subject tells +1	-20	32
subject tells -1	34	-56
subject tells -2	32	-28
subject tells -3		-12
subject tells -4	-6
subject tells here-after		36
subject tells here-before	-37	11
told -1		70
told -2		45
told -3		35
told -4		25
told defect		-33
told fixture		22
told here-after		16
told here-before		13
told material		32
told part		25
told size		-18
told surface		21
told tells		34
told verbish		24
touches-before	27	23
unit area area	-31
unit area defect	-18
unit area fixture	-35
unit area material	78
unit area part	-16
unit area surface	19
unit area verbish	12
unit area word	-28
unit current defect	-11
unit current part	37
unit current surface	-38
unit current verbish	14
unit current word	-15
unit flow part	33
unit flow word	-10
unit length area	-12
unit length defect	-14
unit length finish	-23
unit length fixture	10
unit length material	13
unit length part	11
unit length size	19
unit length tells	-9
unit length tool	-17
unit length word	-11
unit length work	-23
unit none area	-14
unit none defect	-19	-21
unit none finish	-8	-17
unit none fixture	23	23
unit none material	19	17
unit none part	28	20
unit none size	6
unit none tells	-24	-21
unit none tool	-33
unit none verbish	-15	-6
unit none word	-14	-17
unit none work	36	-18
unit other defect	-17
unit other material	11
unit other part	-41
unit other surface	-14
unit other word	41
unit percent defect	13
unit percent finish	17
unit percent material	7
unit percent part	-22
unit percent surface	39
unit percent tells	-49
unit percent tool	11
unit percent verbish	-30
unit percent word	-12
unit pressure area	-15
unit pressure defect	-14
unit pressure fixture	17
unit pressure material	9
unit pressure part	-61
unit pressure size	41
unit pressure surface	34
unit pressure verbish	-18
unit slope material	-27
unit slope surface	24
unit slope word	31
unit temperature defect	-12
unit temperature fixture	-16
unit temperature part	8
unit temperature word	12
unit voltage defect	-16
unit voltage material	-18
unit voltage part	43
unit voltage word	8
unit volume material	-34
unit volume part	21
unit volume word	-40
use buy	-24	7	-10
use have		-17	17
use measure		-9	7
use move	-11	-12	-24
use need		-14
use return		18
use say		17	-32
use see	22	-11
use use	7
where +1	-20	-8
where -1	6		18
where -2		-7	7
where -3	-8	-11
where -4	-16	-18	-26
where here-after	-6	7
where here-before	40	26
whole after about defect		-8
whole after at area		-25
whole after at fixture		-9
whole after at material		-32
whole after at part	75	78
whole after at surface		-20
whole after at verbish	20	-17
whole after at word	39	-22
whole after behind defect		-10
whole after behind fixture		-36
whole after below material	49
whole after by defect		-15
whole after by fixture	-16	-20
whole after by word	-34	22
whole after down word	-14
whole after end defect		-14
whole after for defect		-8
whole after from surface	-17
whole after from word	-27	7
whole after in area		-9
whole after in defect		-10
whole after in fixture		-13
whole after in material		14
whole after in tool		-7
whole after in verbish		-16
whole after in word	-14	-29
whole after of defect		-11
whole after of material	80
whole after of word	-6
whole after off surface	14
whole after off word	15
whole after on defect		-10
whole after on material		15
whole after on size	-16
whole after on surface	87	-25
whole after on tells	-12
whole after on word		-28
whole after out surface		-31
whole after over size	-22
whole after quantity defect		-12
whole after quantity material		-38
whole after quantity surface		24
whole after quantity tells		-21
whole after quantity verbish		-15
whole after quantity word		-12
whole after term area	-26	34
whole after term defect	-8	-19
whole after term finish	-16	-14
whole after term fixture	43	70
whole after term part	10	-27
whole after term size	60	-19
whole after term surface		-22
whole after term verbish	12
whole after term word	18	-21
whole after to defect		-7
whole after to surface	35
whole after to word	-36
whole after up defect		-13
whole after with defect		-16
whole after with word		-9
whole after word area	-28
whole after word defect	-38	-17
whole after word finish		7
whole after word material	-38	7
whole after word part	-46
whole after word size	50
whole after word tells	-12	17
whole after word tool		-26
whole after word word	11	-6
whole article a	9	-11	10
whole article none	-15	-15	-23
whole article other	-8		-9
whole article the		6	9
whole behind about -1		19
whole behind about -2		-21
whole behind about here-after		-8
whole behind about here-before		-8
whole behind above +1	-14
whole behind above -2	-19
whole behind above here-after	-10
whole behind above here-before	22
whole behind across +1	-28
whole behind across -1	40
whole behind across -2	-29
whole behind across -4	-17
whole behind across here-before	79
whole behind after +1	-11
whole behind after -1	-27
whole behind after -2	-22
whole behind after here-before	41
whole behind at +1	-12
whole behind at -1	-36
whole behind at -2	-15	-13
whole behind at -3	-19	-7
whole behind at -4	-15	-7
whole behind at here-after	70	-9
whole behind at here-before	11	10
whole behind behind here-after		26
whole behind behind here-before		-13
whole behind below +1	-12
whole behind below -1	7
whole behind below -2	-8
whole behind below here-after	51
whole behind below here-before	-6
whole behind by +1	-9	29
whole behind by -1		-43
whole behind by -2	26	-33
whole behind by -3	-28
whole behind by -4	29	-10
whole behind by here-after	-17	-15
whole behind by here-before	22	-24
whole behind deep +1	-14
whole behind deep -1	-9
whole behind deep -2	-26
whole behind deep -3	-29
whole behind deep -4	-30
whole behind deep here-after	-44
whole behind deep here-before	20
whole behind down +1	-13	-14
whole behind down -1	66	-11
whole behind down here-after		15
whole behind down here-before	15	9
whole behind end +1	-23
whole behind end -1	8
whole behind end -2	-8	-12
whole behind end -3	-13	-11
whole behind end -4	-16	-12
whole behind end here-after		-14
whole behind end here-before	16	22
whole behind for +1	-13
whole behind for -1	38
whole behind for -2	-25
whole behind for -3	-12	-13
whole behind for -4	-11
whole behind for here-after	-57	-44
whole behind for here-before		34
whole behind from +1	-14
whole behind from -1	7	-20
whole behind from -3	-13
whole behind from -4	-12
whole behind from here-after	26	12
whole behind from here-before	25	36
whole behind high +1	-20
whole behind high -1	23
whole behind high -3	-23
whole behind in +1	-18	-11
whole behind in -1	23
whole behind in -2	33	-14
whole behind in -3	-24	-9
whole behind in -4	-16	-9
whole behind in here-after	-25	-24
whole behind in here-before	31	11
whole behind long +1	-22
whole behind long -2	-11
whole behind long -3	16
whole behind long -4	-25
whole behind long here-after	-24
whole behind long here-before	60
whole behind low +1	-7
whole behind low -1	-42
whole behind low -2	10
whole behind low -4	-7
whole behind low here-before	-53
whole behind mark here-after		18
whole behind mark here-before		31
whole behind number here-after		44
whole behind of +1	-18
whole behind of -1	-36
whole behind of -2	-22
whole behind of -3	-15
whole behind of -4	11
whole behind of here-after	66	7
whole behind of here-before	-11
whole behind off +1	-13
whole behind off -1	-18	-16
whole behind off -2	16
whole behind off -3	17
whole behind off -4	-14
whole behind off here-after	30	23
whole behind off here-before		-14
whole behind on +1		-11
whole behind on -1	-51	-38
whole behind on -2	-28
whole behind on -3	-19	-17
whole behind on -4	13	-9
whole behind on here-after	9	-7
whole behind on here-before	-23
whole behind out +1		8
whole behind out -1		-20
whole behind out here-after		-50
whole behind out here-before		-13
whole behind over +1	-19
whole behind over -1	17
whole behind over -2	-34
whole behind over -3	-11
whole behind over -4	-15
whole behind over here-after	-24	19
whole behind over here-before	19
whole behind quantity -1	-9	-31
whole behind quantity -2	-36
whole behind quantity -3		-14
whole behind quantity here-after	20	-14
whole behind quantity here-before	-25	16
whole behind short +1	-10
whole behind short -1	-30
whole behind short -2	-15
whole behind short -3	-14
whole behind short here-after	-12
whole behind short here-before	9
whole behind tall +1	-22
whole behind tall -1	14
whole behind tall here-before	-41
whole behind term +1	-11	-19
whole behind term -1	14	30
whole behind term -2	-15	-11
whole behind term -3	-9	-16
whole behind term -4	-18
whole behind term here-after	29
whole behind term here-before	11	-9
whole behind thick +1	-29
whole behind thick here-before	-17
whole behind through here-after		38
whole behind to +1	-21
whole behind to -3	-9
whole behind to -4	-14
whole behind to here-after		-22
whole behind to here-before	24	12
whole behind toward -1	-18
whole behind toward -2	8
whole behind toward here-after	-52
whole behind under +1	-20
whole behind under -1	34
whole behind under -2	-21
whole behind under here-after	12	-13
whole behind under here-before	50
whole behind up +1	-19
whole behind up -1	18
whole behind up -2	35
whole behind up -3	-17
whole behind up -4	-24
whole behind up here-after	37	-12
whole behind up here-before	-58
whole behind wide +1	-13
whole behind wide -1	-23
whole behind wide -2	-31
whole behind wide -3	-11
whole behind wide -4	-21
whole behind wide here-before	32
whole behind with +1	-8
whole behind with -1	23
whole behind with -2	-7
whole behind with -4	-16
whole behind with here-after	-29	-43
whole behind word +1	-14
whole behind word -2	6
whole behind word -3	-6
whole behind word -4	-12
whole behind word here-after	-6	-9
whole behind word here-before	13	-8
whole behind-verb		-9
whole between 	17
whole between about	38
whole between and	-76
whole between are		7
whole between be	28
whole between by	11
whole between cut	7
whole between get		24
whole between has		30
whole between have		33
whole between have a		12
whole between is	32	13
whole between just		9
whole between maybe	28
whole between measure	-17
whole between of	21
whole between on	34
whole between only	32
whole between read	30
whole between run	17
whole between the		-48
whole between to	12
whole between want	19
whole carried	29
whole carried -1 none	23
whole carried -1 own	58
whole carried -1 person	13
whole carried -1 pointer	19
whole carried -1 tells	29
whole carried -2 none	44
whole carried -2 own	70
whole carried -2 pointer	15
whole carried -2 tells	27
whole carried -3 none	-12
whole carried -3 own	10
whole carried -3 pointer	-14
whole carried -4 pointer	7
whole carried here-before pointer	44
whole carried here-before tells	38
whole counted count	-11	-9	34
whole counted current	-10	-7	12
whole counted length		-8	-12
whole counted pack	15
whole counted percent	34	-7	18
whole counted power	-31
whole counted pressure	10	-18	-9
whole counted slope	-22
whole counted time	39	-26	-20
whole does ask fixture			13
whole does ask material			-12
whole does ask surface			-11
whole does ask verbish			-8
whole does ask word			61
whole does be area			39
whole does be defect			-30
whole does be fixture			29
whole does be surface			9
whole does be tells			-34
whole does be tool			10
whole does be word			26
whole does bring defect			-40
whole does bring material			20
whole does call defect			-16
whole does call material			18
whole does call part			-9
whole does call surface			18
whole does call word			17
whole does change area			9
whole does change defect			13
whole does change material			39
whole does change word			-20
whole does clean defect			-16
whole does clean material			-8
whole does clean part			-17
whole does clean word			-13
whole does come defect			-42
whole does come fixture			8
whole does come material			-35
whole does come surface			-15
whole does come verbish			38
whole does cut area			-33
whole does cut defect			18
whole does cut material			14
whole does cut part			7
whole does cut size			-12
whole does cut verbish			-19
whole does cut word			-27
whole does do fixture			8
whole does do material			-21
whole does do part			31
whole does do word			-28
whole does dry material			-61
whole does fill area			57
whole does fill defect			82
whole does fill fixture			-16
whole does fill material			-10
whole does fill surface			14
whole does fill word			-31
whole does flip word			-30
whole does fre word			-15
whole does get area			-65
whole does get defect			-25
whole does get finish			-25
whole does get fixture			17
whole does get material			31
whole does get part			-13
whole does get surface			37
whole does get tool			-14
whole does get verbish			-18
whole does get word			8
whole does glue area			-18
whole does glue defect			17
whole does glue surface			21
whole does glue word			-43
whole does go area			7
whole does go defect			-40
whole does go fixture			-17
whole does go material			12
whole does go part			-21
whole does go surface			34
whole does go verbish			-32
whole does go word			9
whole does hang fixture			16
whole does hang word			-13
whole does have fixture			-11
whole does have material			-39
whole does have part			30
whole does have verbish			-28
whole does hit defect			27
whole does hit surface			39
whole does i'll material			13
whole does i'll word			7
whole does leave material			20
whole does leave word			-40
whole does let fixture			20
whole does let material			-16
whole does let surface			-42
whole does let word			-49
whole does look defect			-11
whole does look material			-13
whole does look part			10
whole does make material			-31
whole does move area			18
whole does move material			-51
whole does move part			-23
whole does move surface			13
whole does move word			11
whole does need defect			46
whole does need fixture			39
whole does need material			19
whole does need surface			-30
whole does need verbish			-20
whole does need word			-12
whole does open defect			46
whole does open part			27
whole does patch surface			29
whole does plane fixture			46
whole does plane surface			-11
whole does plane word			-8
whole does pull defect			-45
whole does pull material			-46
whole does pull part			-25
whole does pull surface			20
whole does pull word			-48
whole does put area			10
whole does put finish			-9
whole does put material			-25
whole does put surface			-20
whole does put verbish			24
whole does put word			-11
whole does replace area			-48
whole does replace defect			-23
whole does replace material			7
whole does replace surface			-20
whole does replace word			-33
whole does reset defect			-27
whole does reset word			-11
whole does rip defect			-13
whole does rip material			9
whole does run defect			22
whole does run fixture			39
whole does run material			-64
whole does run part			37
whole does run word			-48
whole does sand defect			7
whole does sand material			22
whole does sand surface			57
whole does sand word			-34
whole does say area			-27
whole does say defect			19
whole does say fixture			-25
whole does say material			11
whole does say part			-8
whole does say surface			-20
whole does say word			-27
whole does seal material			23
whole does seal surface			13
whole does see area			-14
whole does see fixture			-16
whole does see material			14
whole does see surface			30
whole does see word			-18
whole does set defect			-18
whole does set material			21
whole does set word			17
whole does shim defect			-33
whole does shim word			34
whole does sister material			44
whole does sister word			-25
whole does sit material			-19
whole does snug part			7
whole does snug word			14
whole does splice defect			-8
whole does splice material			-7
whole does stick word			38
whole does swap area			-58
whole does swap defect			-22
whole does swap fixture			9
whole does swap material			-11
whole does swap part			7
whole does swap surface			-40
whole does swap verbish			-15
whole does swap word			34
whole does take area			-40
whole does take defect			-28
whole does take fixture			-20
whole does take material			-21
whole does take surface			-14
whole does take word			64
whole does tape defect			-24
whole does tape word			-14
whole does tighten defect			-17
whole does trim defect			-22
whole does trim word			-7
whole does turn defect			-13
whole does turn part			-13
whole does want area			-43
whole does want defect			-36
whole does want fixture			10
whole does want material			51
whole does want part			-15
whole does want surface			12
whole does want verbish			18
whole far after 0	39	-11
whole far after 1	-7	-8
whole far after 13+	-23	-13
whole far after 2	18
whole far after 3-4	-14
whole far after 5-7	-15
whole far after 8-12	-24	8
whole far before 0	17		12
whole far before 1	18	10
whole far before 13+	-21	-11	-24
whole far before 2	16	16
whole far before 3-4			8
whole far before 5-7	8	-10
whole far before 8-12	-7
whole flawed	-8	-7
whole frame copula +1	-19
whole frame copula -2	-7
whole frame copula -3	-14
whole frame copula -4	-12	-11
whole frame copula area			29
whole frame copula defect			-16
whole frame copula finish			20
whole frame copula fixture			47
whole frame copula here-after	20	-15
whole frame copula here-before	13		9
whole frame copula material			-10
whole frame copula size			14
whole frame copula tells			-29
whole frame copula tool			-17
whole frame copula word			-13
whole frame imperative +1	-24	50
whole frame imperative -1	79	60	10
whole frame imperative -2	-20	25	13
whole frame imperative -3		-18
whole frame imperative -4	-8	-23	-14
whole frame imperative area			37
whole frame imperative defect			-15
whole frame imperative finish			14
whole frame imperative here-after	-35	9
whole frame imperative here-before	-10	12	37
whole frame imperative part			17
whole frame imperative size			30
whole frame imperative tells			21
whole frame imperative verbish			-21
whole frame modal +1	-22	30
whole frame modal -1	42	-8	-12
whole frame modal -2	-12	20
whole frame modal -3	-18	-7	-9
whole frame modal -4	-28	-13	-20
whole frame modal area			-27
whole frame modal finish			11
whole frame modal fixture			21
whole frame modal here-after	34	19
whole frame modal here-before	53		16
whole frame modal part			-16
whole frame modal size			-17
whole frame modal surface			10
whole frame modal tells			-30
whole frame modal tool			-38
whole frame modal verbish			13
whole frame modal word			-24
whole frame none +1	-21	-12
whole frame none -1		10	33
whole frame none -2			-16
whole frame none -3	-10
whole frame none -4	-24	-7	-15
whole frame none area			32
whole frame none defect			-15
whole frame none finish			-26
whole frame none here-after	14	-23
whole frame none here-before	8		-22
whole frame none material			14
whole frame none part			13
whole frame none tells			-24
whole frame none tool			10
whole frame none verbish			-13
whole frame none word			-11
whole frame owed +1	15	-7
whole frame owed -2	-18	-16	21
whole frame owed -3		-10
whole frame owed -4	16	-13	-25
whole frame owed area			15
whole frame owed defect			-20
whole frame owed finish			-37
whole frame owed fixture			20
whole frame owed here-after	-15	10
whole frame owed here-before		39	24
whole frame owed material			11
whole frame owed size			-10
whole frame owed surface			17
whole frame owed tells			-21
whole frame owed tool			-30
whole frame owed verbish			-11
whole frame owed word			11
whole frame past +1	-20	-11
whole frame past -1		-19
whole frame past -2		-10	-16
whole frame past -3	-21	-11	-31
whole frame past -4	-14		-29
whole frame past defect			-16
whole frame past finish			-32
whole frame past fixture			-8
whole frame past here-after		13
whole frame past here-before	23	17	-19
whole frame past part			-9
whole frame past size			-17
whole frame past surface			-11
whole frame past tells			32
whole frame past tool			-17
whole frame past verbish			-25
whole frame past word			-30
whole frame past work			-12
whole frame present +1	-21	-20
whole frame present -1	10	-11
whole frame present -2		-13
whole frame present -3		-7
whole frame present -4	-18		-11
whole frame present defect			7
whole frame present finish			32
whole frame present fixture			29
whole frame present here-after	18
whole frame present here-before	34		8
whole frame present material			-28
whole frame present part			-10
whole frame present surface			9
whole frame present tells			-31
whole frame present verbish			-14
whole heading	-13
whole heading +1	-13
whole heading -1	-21	22
whole heading -2	-12	-9	11
whole heading -3	9	-7	9
whole heading -4	-10	8
whole heading here-after		-14
whole heading here-before		-8
whole is-flaw	-11	-12
whole kind +1 area	-14	7
whole kind +1 defect	-16
whole kind +1 finish	-15	-11
whole kind +1 material	-12
whole kind +1 part	-19
whole kind +1 size	-12
whole kind +1 surface	-16
whole kind +1 tells	-10
whole kind +1 tool	-12
whole kind +1 verbish	-10	-10
whole kind +1 word	-13
whole kind -1 area	14	27	39
whole kind -1 defect	-23	-21	-10
whole kind -1 finish		27	9
whole kind -1 fixture	27		9
whole kind -1 material		-8	9
whole kind -1 part	16		12
whole kind -1 size	12	-20	12
whole kind -1 surface		6
whole kind -1 tells	-22	-33	7
whole kind -1 tool		-15	-8
whole kind -1 verbish	-7	-8
whole kind -1 word			-7
whole kind -2 area	-24		-17
whole kind -2 defect	-13	-6	-19
whole kind -2 finish	-25		8
whole kind -2 fixture	37		27
whole kind -2 material	-8
whole kind -2 part	7		6
whole kind -2 size	-12		17
whole kind -2 surface	-14	10	9
whole kind -2 tells	-11	-14
whole kind -2 tool	-16	-13
whole kind -2 verbish		-8	-11
whole kind -2 word	-7		-11
whole kind -2 work	-21		-15
whole kind -3 defect	-17
whole kind -3 finish	-11		-30
whole kind -3 fixture	-24		12
whole kind -3 material	-8
whole kind -3 part	-9		-16
whole kind -3 size	-22		-14
whole kind -3 tells			-28
whole kind -3 tool	-11	-8	-16
whole kind -3 verbish	-14		-17
whole kind -3 word			-10
whole kind -3 work	-12
whole kind -4 area		-8	19
whole kind -4 defect	-9		-13
whole kind -4 finish	-10	-6	-19
whole kind -4 fixture	12
whole kind -4 material	-6		-16
whole kind -4 part	-9		-10
whole kind -4 size	-15		-18
whole kind -4 surface	-15
whole kind -4 tells	-8	21	-18
whole kind -4 tool	-15		-22
whole kind -4 verbish	-8		-17
whole kind -4 word	-9		-11
whole kind -4 work	-8		-24
whole kind area	-8		12
whole kind defect	-6	-12	-12
whole kind fixture	14	8	13
whole kind here-after area	-16	16
whole kind here-after defect	-17	-13
whole kind here-after fixture	10	14
whole kind here-after material	38
whole kind here-after part	-7	11
whole kind here-after size	33
whole kind here-after surface	19
whole kind here-after tells	-16
whole kind here-after tool	9	-24
whole kind here-after verbish	10
whole kind here-after word		-11
whole kind here-before area	-24	-12	-28
whole kind here-before defect	58	-28	17
whole kind here-before finish	31	-9	24
whole kind here-before fixture		16	-10
whole kind here-before material			43
whole kind here-before part	14		-19
whole kind here-before size	13	25
whole kind here-before surface	22	13
whole kind here-before tells		7	-23
whole kind here-before tool	-9	13	-18
whole kind here-before verbish	-14	-29	-38
whole kind material		-7
whole kind size	7
whole kind tells	-9		-11
whole kind tool	-9	-10	-16
whole kind verbish	-8	-7	-13
whole kind word	-9	-8	-16
whole kind work	-18	-7	-32
whole lead a -1		14
whole lead a -2	-12	-13
whole lead a -3	-22	-14
whole lead a -4	-18
whole lead a here-after	109	-21
whole lead a here-before	-29
whole lead about -3	-18
whole lead about -4	-12
whole lead about here-before	38
whole lead area -1		-17
whole lead area -2		-13
whole lead area -4		-8
whole lead area here-before	-35	-14
whole lead at -1	-16
whole lead at -3	-18
whole lead at -4	-26
whole lead at here-after	-26
whole lead at here-before	18
whole lead by -2	8
whole lead by -3	-20
whole lead by -4	12
whole lead by here-after	-27
whole lead by here-before	19
whole lead defect -1	-32
whole lead defect -2	-16
whole lead defect -3	-13
whole lead defect -4	-16
whole lead defect here-after	15
whole lead defect here-before	39
whole lead down -1	-14
whole lead down -2	-26
whole lead down here-after	-53
whole lead down here-before	29
whole lead every -1	-24
whole lead every -2	-30
whole lead fixture -1	-49
whole lead fixture -2	-21	-6
whole lead fixture -3	-23
whole lead fixture -4	-13
whole lead fixture here-after	-58	-9
whole lead fixture here-before	71	24
whole lead for -1	69
whole lead for -3	-11
whole lead for -4	-15
whole lead for here-before	43
whole lead in -1	32
whole lead in -2	-16
whole lead in -4	-19
whole lead in here-before	32
whole lead mark -1	7
whole lead mark -2	25
whole lead mark -4	-14
whole lead mark here-after	-57
whole lead mark here-before	17
whole lead material -1	10	18
whole lead material -2	-8	-13
whole lead material -4	-14	-7
whole lead material here-after	34	-30
whole lead number here-after		-20
whole lead number here-before		58
whole lead of -1	65
whole lead of -2	-21
whole lead of -3	-14
whole lead of -4	-16
whole lead of here-after	11
whole lead of here-before	18
whole lead out -2	-24
whole lead out -3	8
whole lead out -4	-21
whole lead out here-after	-31
whole lead over -1	25
whole lead over -2	-18
whole lead over -3	29
whole lead over -4	-12
whole lead over here-before	16
whole lead part -1	-22
whole lead part -2	-17
whole lead part -3	-20	-6
whole lead part -4	-35
whole lead part here-after	-54	-19
whole lead part here-before	30
whole lead past -2	10
whole lead quantity -1		35
whole lead quantity -2		29
whole lead quantity -3		-14
whole lead quantity -4		-6
whole lead quantity here-before	-18	29
whole lead role here-after		27
whole lead size -1		-38
whole lead size -3	-8
whole lead size -4	-25
whole lead size here-after	-27
whole lead size here-before		29
whole lead surface -1	-11	-9
whole lead surface -2	-15	39
whole lead surface -3	-34	16
whole lead surface -4	-18
whole lead surface here-after	-25	-16
whole lead surface here-before	13
whole lead tells here-after		-8
whole lead tells here-before		-14
whole lead that -1		-12
whole lead that here-after		38
whole lead the -2		-6
whole lead the -3		-9
whole lead the -4		-15
whole lead the here-after		19
whole lead the here-before		-14
whole lead to -2	10
whole lead to -3	-18
whole lead to here-after	-21
whole lead to here-before	31
whole lead tool here-after		21
whole lead tool here-before		12
whole lead up -1	23
whole lead up -2	25
whole lead up -3	-18
whole lead up -4	-10
whole lead up here-after	-15
whole lead up here-before	16
whole lead verbish -1	25	-7
whole lead verbish -2		-11
whole lead verbish -3	-9
whole lead verbish -4	-16	-6
whole lead verbish here-after	35	-15
whole lead with -4		-7
whole lead with here-after	96
whole lead with here-before		-19
whole lead word -1	-7	-11
whole lead word -2		-16
whole lead word -3	-13
whole lead word -4		-8
whole lead word here-after	19
whole lead word here-before	18
whole lemma be object	12	-19
whole lemma be subject-late	29	22
whole lemma cut object	12
whole lemma drip object		9
whole lemma dump object		-14
whole lemma find object		71
whole lemma get object	37	-18
whole lemma go object	23	12
whole lemma go subject	9	9
whole lemma hang object	40
whole lemma have object	72
whole lemma have subject-late	31	41
whole lemma hit object		-22
whole lemma hold object	-9
whole lemma leave object	56	-20
whole lemma measure object	43
whole lemma measure subject	-7
whole lemma move object	-22
whole lemma need object	-9	47
whole lemma put object	35	19
whole lemma read object	14
whole lemma read subject	-9
whole lemma run object	-37
whole lemma run subject	22
whole lemma say object		50
whole lemma say subject	35	-41
whole lemma sit object	-32	-31
whole lemma sit subject	12
whole lemma stick object		-20
whole lemma stick subject	15
whole lemma take object	-36
whole lemma want object	48	-45
whole not-carried	-33
whole not-carried +1 none	-20
whole not-carried +1 own	-14
whole not-carried +1 person	40
whole not-carried +1 pointer	-19
whole not-carried +1 tells	-15
whole not-carried -1 none	-8
whole not-carried -1 own	-31
whole not-carried -1 person	-38
whole not-carried -1 tells	19
whole not-carried -2 none	-24
whole not-carried -2 own	-24
whole not-carried -2 person	-20
whole not-carried -2 pointer	-35
whole not-carried -2 tells	-32
whole not-carried -3 none	-14
whole not-carried -3 own	-18
whole not-carried -3 person	-15
whole not-carried -3 pointer	-10
whole not-carried -3 tells	-17
whole not-carried -4 none	-20
whole not-carried -4 own	-14
whole not-carried -4 person	-19
whole not-carried -4 pointer	-18
whole not-carried here-after none	17
whole not-carried here-after own	33
whole not-carried here-after pointer	46
whole not-carried here-before person	44
whole not-carried here-before pointer	32
whole not-carried here-before tells	25
whole not-told		-14
whole not-told +1		-9
whole not-told -1		12
whole not-told here-after		-16
whole not-told here-before		12
whole number many many			-12
whole number many one			-21
whole number none many			10
whole number none one			-26
whole opens-with +1	-18	10
whole opens-with -1	9	-18
whole opens-with -2		-13
whole opens-with -3	10	-14
whole opens-with -4	-21	-12
whole opens-with here-after	29	-6
whole part +1 bare	-17
whole part +1 object	-16	-8
whole part +1 opens	-17
whole part +1 subject	-14
whole part +1 subject-late	-10	21
whole part -1 bare		-7
whole part -1 object			8
whole part -1 opens			-10
whole part -1 subject	9	-9
whole part -1 subject-late	11		7
whole part -2 bare	-17	-12
whole part -2 object	-7	-8	-8
whole part -2 subject-late	22	16	29
whole part -3 bare	-18		-13
whole part -3 object	-14		-12
whole part -3 opens	-6
whole part -4 bare	-8		-12
whole part -4 object	-12	-7	-20
whole part -4 opens	-8
whole part -4 subject	-10		-9
whole part -4 subject-late		-8
whole part bare	-7	-13	-9
whole part bare area			15
whole part bare defect	-19	-11	-25
whole part bare finish	-8	13	29
whole part bare fixture	14	7	-15
whole part bare material		-6	11
whole part bare part	-13	-7	8
whole part bare size	21		19
whole part bare surface		-18	7
whole part bare tells	-37		-13
whole part bare tool	-8
whole part bare verbish	11	-26	-31
whole part bare word	-12		-13
whole part bare work	-9
whole part here-after bare	14	-22
whole part here-after object	9
whole part here-after subject-late	7	-7
whole part here-before bare	17	21	32
whole part here-before object	30
whole part here-before opens			-48
whole part here-before subject			9
whole part here-before subject-late	24	23
whole part object	-8	-10	-14
whole part object area	-15	10	19
whole part object defect		-12
whole part object finish			-14
whole part object fixture	12	11	18
whole part object material		-7
whole part object size	9		-7
whole part object surface	10		-9
whole part object tells	-27	-10	-17
whole part object tool	-11	-13	-15
whole part object verbish	-11		-7
whole part object word	-9	-6	-16
whole part object work	-7	-10	-11
whole part opens	-8
whole part opens area			15
whole part opens defect	7		-7
whole part opens finish	-26		-26
whole part opens fixture			23
whole part opens material	-12
whole part opens part	8		-13
whole part opens size		-18	-16
whole part opens surface	-15		9
whole part opens tells			-23
whole part opens tool		-14	-12
whole part opens verbish		-11	-16
whole part opens word			-10
whole part opens work	-21		-24
whole part subject area	-17		11
whole part subject defect	-24	-11	-39
whole part subject finish		29	27
whole part subject part	-8
whole part subject size			10
whole part subject tells	15	-22	-39
whole part subject tool			-17
whole part subject verbish	-13	8	-12
whole part subject word		-7
whole part subject work	-12
whole part subject-late	12	11	10
whole part subject-late area	8		-14
whole part subject-late defect	-46	-19	-41
whole part subject-late finish	-21	-12	45
whole part subject-late fixture	44	16	40
whole part subject-late material			-12
whole part subject-late part	35	13
whole part subject-late size	43	37
whole part subject-late surface	13	45	35
whole part subject-late tool		13
whole part subject-late verbish		-35	-22
whole part subject-late word	-17	-7	-7
whole points both -1			43
whole points both object			-19
whole points both subject			8
whole points em -1			-27
whole points em -2			-32
whole points em -4			-24
whole points em bare			-25
whole points em here-before			26
whole points em object			-14
whole points em opens			-10
whole points em subject			-12
whole points em subject-late			-15
whole points it -3			-11
whole points it -4			-12
whole points it here-before			-21
whole points it object			-20
whole points none -2			-14
whole points none -3			-11
whole points none -4			-19
whole points none bare			-15
whole points none here-before			47
whole points none object			-21
whole points none opens			-10
whole points none subject-late			34
whole points one -1			8
whole points one -2			-8
whole points one -3			-25
whole points one -4			23
whole points one here-before			69
whole points one object			11
whole points one opens			38
whole points one subject			13
whole points one subject-late			-25
whole points that -1			30
whole points that -4			-43
whole points that bare			-32
whole points that here-before			6
whole points that object			18
whole points that opens			-18
whole points that subject			-14
whole points them -1			48
whole points them -3			-26
whole points them -4			-55
whole points them bare			7
whole points them opens			-33
whole points them subject-late			-26
whole points they -1			-28
whole points they -4			7
whole points they bare			-35
whole points they here-before			-58
whole points they object			-6
whole points they opens			-18
whole points they subject			-19
whole points they subject-late			26
whole points this -1			22
whole points this -2			55
whole points this subject			7
whole points those -1			55
whole points those -2			-29
whole points those -3			27
whole points those -4			-48
whole points those object			10
whole points those opens			-14
whole points those subject			14
whole points those subject-late			-26
whole prep about		-11	-32
whole prep above			-8
whole prep across		-11	-15
whole prep after	-19	-11	-30
whole prep along	18	-34	-24
whole prep around	-36	37	38
whole prep before	-19	-10	-21
whole prep behind		29	72
whole prep below	57	-12	-16
whole prep between	56	10	-7
whole prep by	-23		-19
whole prep down		-12	-12
whole prep for	9
whole prep from	-12	-13	-26
whole prep here-after above		-20
whole prep here-after along		-15
whole prep here-after at	45
whole prep here-after before	-37
whole prep here-after behind	11	22
whole prep here-after below	57	-11
whole prep here-after by	-24	-16
whole prep here-after down		-6
whole prep here-after for	-44	-10
whole prep here-after from	12	-16
whole prep here-after in	-54	25
whole prep here-after into		-18
whole prep here-after near		-42
whole prep here-after of	45	-12
whole prep here-after off	53	-14
whole prep here-after out		-14
whole prep here-after over	-19	12
whole prep here-after past		-9
whole prep here-after to	-33	-17
whole prep here-after toward	-50
whole prep here-after under	8	-31
whole prep here-after up		30
whole prep here-after with	-42	-31
whole prep here-after without		-18
whole prep here-before along		-49
whole prep here-before at	-32		73
whole prep here-before behind	28	32
whole prep here-before by	-50	20
whole prep here-before for		41
whole prep here-before from	-25
whole prep here-before in	7	11	-60
whole prep here-before of	29	12
whole prep here-before on		7	-7
whole prep here-before over	37	49
whole prep here-before to		98	-22
whole prep here-before under	7	32
whole prep here-before with	89
whole prep in	-9	6
whole prep into	-12	-19
whole prep near	-43	12	10
whole prep of	7
whole prep off	32		-18
whole prep on	-10	8
whole prep other about			-35
whole prep other above	-20	10	-9
whole prep other across	-11		-15
whole prep other after	-10	-10	-19
whole prep other along	-34		-24
whole prep other around	-11	7	38
whole prep other at	-12		-12
whole prep other before	-10	-8	-21
whole prep other behind	-15	18	72
whole prep other below			-16
whole prep other between	24		-7
whole prep other by	-15		-15
whole prep other down		-11	-12
whole prep other for	19
whole prep other from	-22	-12	-27
whole prep other in	-6		6
whole prep other near			10
whole prep other off	12		-18
whole prep other on	-12	11	6
whole prep other out	-12	-8	-19
whole prep other over	-26	-8
whole prep other past			-46
whole prep other through		-9
whole prep other to	-8	-10	-27
whole prep other toward	-15	-14
whole prep other under			6
whole prep other up	7		-14
whole prep other with	-7	-7
whole prep out		-21	-17
whole prep over	-16	8
whole prep past	-17	-19	-46
whole prep per	-7
whole prep through		51
whole prep to	-12		-28
whole prep toward	-40	-36
whole prep up	-9	23	-14
whole prep with		-14
whole prep without		-17
whole rank after 0		-9
whole rank after 1	-16
whole rank after 2	-13
whole rank after 3	-12	-6
whole rank after 4	-12	-11
whole rank before 0	14
whole rank before 3		-9
whole rank before 4	-18	-10	-20
whole says copula		-11	-12
whole says imperative		11	22
whole says none	-11	-15	-11
whole says owed	-10	6	-13
whole says past	-12		-8
whole says present		-10
whole sentences -1	-35	-15	-30
whole sentences -1 bare	-25	-14	-18
whole sentences -1 object	-25	-10	-26
whole sentences -1 opens	-19		-14
whole sentences -1 subject	-11		-6
whole sentences -2	-27	-8	-28
whole sentences -2 bare	-15		-25
whole sentences -2 object	-13		-25
whole sentences -2 opens	-14
whole sentences -2 subject	-20		-14
whole sentences -2 subject-late		-7	9
whole sentences 1	-22	-14
whole sentences 1 bare	-16	-11
whole sentences 1 object	-13	-9
whole sentences 1 opens	-17
whole sentences 1 subject	-17	-6
whole sentences 1 subject-late	-13	-9
whole size 2	-16	-10	-18
whole stands-off-after		-10
whole subject none +1	-22
whole subject none -1	9	14
whole subject none -2	-10
whole subject none -3	-9
whole subject none -4	-15
whole subject none here-after	16	-14
whole subject none here-before	8
whole subject own +1	-18
whole subject own -1	-7
whole subject own -2	-7
whole subject own -3	-11
whole subject own -4	-18	-6
whole subject own here-after		-15
whole subject own here-before	14	6
whole subject person +1	56	43
whole subject person -1	-14	-57
whole subject person -2	-23	-16
whole subject person -3	-38	-8
whole subject person -4	21	9
whole subject person here-after	-25
whole subject person here-before	9	-22
whole subject pointer +1	-21	-17
whole subject pointer -1	9	-9
whole subject pointer -2		-16
whole subject pointer -3	-15	-11
whole subject pointer -4	-14	-12
whole subject pointer here-after	15	11
whole subject pointer here-before	32	6
whole subject tells +1	-15
whole subject tells -1	26
whole subject tells -2	-21
whole subject tells -3	-7
whole subject tells here-after	81	-15
whole subject tells here-before	32
whole told -1		14
whole told -2		8
whole told -3		-13
whole told -4		-12
whole told defect		-14
whole told finish		26
whole told fixture		16
whole told here-after		7
whole told size		-14
whole told surface		7
whole told tells		28
whole told tool		-13
whole told verbish		-22
whole touches-after	41
whole touches-before	18
whole unit area area	-27
whole unit area defect	10
whole unit area fixture	-36
whole unit area part	-12
whole unit area surface	40
whole unit current defect	-27
whole unit current part	23
whole unit current surface	-16
whole unit current verbish	-11
whole unit current word	-30
whole unit flow part	-18
whole unit flow word	-51
whole unit length area	-11
whole unit length finish	-16
whole unit length fixture	13
whole unit length tells	-19
whole unit length verbish	-7
whole unit length word	-8
whole unit length work	-14
whole unit none defect	-20	-12
whole unit none finish	20
whole unit none fixture	29	7
whole unit none material		-7
whole unit none part	-7
whole unit none surface	14
whole unit none tells	16
whole unit none tool	-31	-10
whole unit none verbish	-7	-7
whole unit none word	-7	-8
whole unit none work		-6
whole unit other defect	-14
whole unit other material	-14
whole unit other part	-24
whole unit other word	-9
whole unit percent area	15
whole unit percent defect	-16
whole unit percent finish	13
whole unit percent fixture	-8
whole unit percent material	-30
whole unit percent part	-20
whole unit percent size	11
whole unit percent surface	15
whole unit percent tells	-57
whole unit percent tool	-12
whole unit percent verbish	-25
whole unit percent word	-11
whole unit pressure area	-25
whole unit pressure defect	-20
whole unit pressure fixture	-24
whole unit pressure material	7
whole unit pressure part	-16
whole unit pressure surface	-32
whole unit pressure word	-29
whole unit slope material	-19
whole unit slope surface	-18
whole unit temperature area	-11
whole unit temperature defect	-13
whole unit temperature fixture	7
whole unit temperature material	-18
whole unit temperature part	-16
whole unit temperature size	-15
whole unit temperature word	-11
whole unit voltage defect	-21
whole unit voltage material	-14
whole unit voltage part	51
whole unit volume material	10
whole unit volume part	40
whole unit volume word	-45
whole use buy	-17	18	-19
whole use have	22
whole use measure		-19	-9
whole use move	-15	-7	-13
whole use need		-10
whole use say		30	31
whole use see	-15	-11	-13
whole use use		-20
whole use work	-9		-12
whole where +1	-19
whole where -1			6
whole where -2	-7	-6
whole where -3	-12		-9
whole where -4	-14	-8	-20
whole where here-after	12	-10
whole where here-before	15
`;
