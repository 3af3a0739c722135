/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-6
after at defect		-17
after at fixture		6
after at material		20
after at part	28	-10
after at surface	-9	35
after at word		-25
after behind defect		-10
after behind fixture		-29
after by defect		-38
after by fixture		37
after down defect		-11
after end defect		-19
after for defect		-17
after from defect		20
after in area		-24
after in defect		20
after in material		46
after in word	-7	24
after mark defect		-8
after of material	16
after of word	-19
after on defect		-38
after on material		62
after on surface	9	45
after on tells	-9
after on word	-14	-23
after out material		-12
after quantity defect		-24
after quantity fixture		46
after quantity material		74
after quantity part		48
after quantity size		46
after quantity surface		-48
after quantity verbish		-25
after term area		11
after term defect	-7
after term finish		-20
after term fixture	-19	16
after term material	10	8
after term part	49	48
after term size	8	9
after term surface	-7	8
after term verbish		31
after term word		-10
after word area		32
after word defect	-8	-22
after word finish		-38
after word fixture		31
after word material	-8	42
after word part		37
after word size	23
after word surface	-11	66
after word tells		-16
after word tool		-13
article a	-15	-13	-10
article none	-8	-12	-18
article other	-14	-17	-31
article the	19	28	38
behind about +1		-7
behind about -1		-24
behind about -2		-9
behind about -4		-16
behind about here-after		-11
behind about here-before		54
behind across -1	47
behind after -2	-31
behind at +1	-18	-19
behind at -1	-21	7
behind at -2	32	-29
behind at -3	-7	-11
behind at -4	-24	-22
behind at here-before	24	52
behind behind +1		-8
behind behind -1		32
behind behind -2		-19
behind behind -3		-8
behind behind here-after		18
behind behind here-before		-29
behind below +1	-14
behind below -1	28
behind below here-before	9
behind by +1	-18	-21
behind by -1	-10	-32
behind by -2	10	-33
behind by -3	-13	-27
behind by -4		28
behind by here-after	-18	20
behind by here-before	43	48
behind deep +1	-10
behind deep -1	26
behind deep -3	-61
behind deep -4	-12
behind deep here-before	31
behind down +1		-23
behind down -1		-38
behind down here-after		45
behind down here-before	11	13
behind end +1	-17	-13
behind end -1	13	9
behind end -2	-12
behind end -4	-15	-12
behind end here-after		-19
behind end here-before	28	27
behind for -1	34	67
behind for -2	-10
behind for -3	6	-23
behind for -4	-24
behind for here-after	-19	-73
behind for here-before		40
behind from +1	-15	-33
behind from -1	22	-12
behind from -2	-17	-18
behind from -3	-14	27
behind from -4	-11	-15
behind from here-after		10
behind from here-before	33	27
behind high +1	-18
behind high -1	21
behind high -2	7
behind high -3	-21
behind in +1	-10	-8
behind in -1	26	17
behind in -2	-7
behind in -3	-12	-22
behind in -4	-17	-24
behind in here-after	-13	21
behind in here-before	23
behind long -1	20
behind long -2	-21
behind long -3	-34
behind long here-before	40
behind mark +1		-6
behind mark -1		-19
behind mark -2		22
behind mark -4		-7
behind mark here-after		-22
behind mark here-before		32
behind number -2		-30
behind number here-after		58
behind of +1	-20
behind of -1	22
behind of -2	-20	20
behind of -3	-14
behind of -4	-30
behind of here-after		10
behind of here-before	41
behind off +1	-16	-12
behind off -1	7	-27
behind off -2	-15	-19
behind off -3	-28	-41
behind off -4	-24	19
behind off here-after	-6	36
behind off here-before	69	19
behind on +1	-28	-20
behind on -2	19	-9
behind on -3	20
behind on -4	-26	-23
behind on here-after	-18	13
behind on here-before	19	29
behind out +1		-10
behind out -1		13
behind out -3		-16
behind out -4		-13
behind out here-after		-12
behind out here-before		35
behind over +1	-19
behind over -1	-15
behind over -2	-23
behind over -3	12
behind over -4	-10
behind over here-after	-15
behind over here-before	56
behind quantity +1		-10
behind quantity -1	8
behind quantity -2	-23	6
behind quantity -3		-25
behind quantity -4		-36
behind quantity here-after	-8	22
behind quantity here-before	27	31
behind short +1	-10
behind short -2	-37
behind short -3	-12
behind short -4	-12
behind short here-after	23
behind short here-before	42
behind term +1	-22	-24
behind term -1		-21
behind term -2	21
behind term -3	-17	-21
behind term -4	-32	-27
behind term here-after		28
behind term here-before	47	76
behind to +1	-20	-18
behind to -1	36
behind to -2	10
behind to -3	-30
behind to -4	-18
behind to here-after	-13	-58
behind to here-before	14	59
behind toward here-after	-21
behind under +1	-19
behind under -1	-35
behind under here-after		-69
behind under here-before	42
behind up +1		-8
behind up -1	16	-44
behind up -2	16	-21
behind up -4	-20
behind up here-after		46
behind up here-before	12	39
behind wide +1	-11
behind wide -1	-22
behind wide -2	-19
behind wide here-before	50
behind with +1	-7	-23
behind with -1	15
behind with -2		-20
behind with -3	-6
behind with -4	-12
behind with here-after	-8	-22
behind with here-before	17	49
behind word +1	-14	-18
behind word -1	-9	-12
behind word -2		-6
behind word -3	12
behind word -4	-17	-8
behind word here-after	-7	21
behind word here-before	32	23
between 	24	21
between about	-33
between and	-74
between are	10	44
between at	14
between be	-31	-9
between by	-8
between get a		12
between has		-12
between has a		34
between is	33	18
between read	18
between say	-27
between sit	54
between to	36
between want	11
between were		46
carried	40
carried -1 none	7
carried -1 own	19
carried -1 pointer	62
carried -1 tells	96
carried -2 none	36
carried -2 own	6
carried -2 pointer	73
carried -2 tells	68
carried -3 pointer	52
carried -4 none	-43
carried -4 own	-11
carried -4 pointer	14
carried here-before none	36
carried here-before own	21
carried here-before pointer	34
counted bare		16	14
counted count	-9	19	44
counted current	-11
counted length	-15		-21
counted pack	-15	-17	-50
counted percent			9
counted pressure		-31
counted slope	-8
counted time	10	-8
counted voltage		-23
counted volume		-22
does be area			-11
does be defect			-32
does be fixture			19
does be size			-32
does be tells			-13
does be tool			36
does be verbish			33
does call defect			-24
does call part			18
does call word			-26
does change material			34
does come defect			-19
does come fixture			-13
does come material			-43
does come surface			-24
does come word			18
does cut area			-37
does cut defect			11
does cut fixture			33
does cut verbish			-23
does cut word			9
does fill defect			29
does fill fixture			-12
does fill word			-13
does fre word			30
does get area			-38
does get defect			-41
does get finish			-19
does get fixture			40
does get material			44
does get part			12
does get surface			16
does get verbish			-15
does get word			-15
does go area			34
does go defect			-22
does go material			-37
does go part			46
does go surface			-11
does go verbish			-39
does go word			-13
does have area			-7
does have defect			53
does have fixture			-36
does have material			9
does have part			8
does have verbish			-8
does have word			-6
does leave word			57
does let word			-18
does look defect			-10
does look material			-29
does look part			48
does look word			-12
does move material			-29
does move part			83
does move word			-44
does need defect			-10
does need material			51
does need part			19
does need surface			21
does need word			15
does open defect			38
does open material			-9
does open word			-17
does pull part			7
does pull word			-27
does put area			-13
does put defect			-15
does put fixture			25
does put material			16
does put part			56
does put surface			-43
does put word			-25
does replace defect			-10
does replace material			-13
does sand defect			14
does sand surface			30
does sand word			-68
does say part			44
does say word			-32
does seal defect			-8
does seal material			-7
does seal surface			74
does seal word			-56
does snug part			24
does snug word			34
does swap area			-23
does swap defect			-28
does swap fixture			-55
does swap material			37
does swap part			54
does swap surface			-53
does swap verbish			-8
does swap word			39
does take area			-20
does take defect			-27
does take fixture			19
does take material			20
does take surface			-44
does take word			28
does want part			-28
does want verbish			23
does want word			-46
far after 1	-16	22
far after 13+	-22	-6
far after 2	-12
far after 3-4	-6
far after 5-7	-13	-11
far after 8-12	-12	-9
far before 0	25	21	-33
far before 1	13		-10
far before 13+	-24	-22	-7
far before 2	21	20
far before 3-4	20	21
far before 5-7	17
far before 8-12	7	-7	13
figure-between		-19
flawed	13	7	49
frame copula +1	-15
frame copula -2	-7		11
frame copula -3	-9	-6
frame copula -4	-23	-12
frame copula defect			-39
frame copula finish			8
frame copula fixture			29
frame copula here-after	-7
frame copula here-before	38	22	-26
frame copula material			29
frame copula part			31
frame copula size			-47
frame copula tells			-41
frame copula tool			-12
frame copula verbish			47
frame copula word			-39
frame imperative +1	-41	20
frame imperative -1	36	-11	-7
frame imperative -2	-27	24	17
frame imperative -3	-15	-35	25
frame imperative -4	19	-51	-25
frame imperative area			-7
frame imperative defect			-9
frame imperative finish			-19
frame imperative fixture			23
frame imperative here-after	-23	8
frame imperative here-before	32	43	-44
frame imperative material			19
frame imperative part			14
frame imperative size			13
frame imperative surface			-17
frame imperative tells			-52
frame imperative tool			-12
frame modal +1	-22	-15
frame modal -1	38	-42	-8
frame modal -2	38	36	23
frame modal -3	-16	27	17
frame modal -4	-26	-53	-16
frame modal area			-7
frame modal defect			-23
frame modal fixture			7
frame modal here-after	-20	50
frame modal here-before	-23	-10	-41
frame modal material			-7
frame modal part			93
frame modal size			-8
frame modal tells			-12
frame modal tool			-32
frame modal verbish			-28
frame modal word			-17
frame none +1	-19	-33
frame none -1	9	8	28
frame none -2		-16
frame none -3	-12	-11	-13
frame none -4	-17	-8	-7
frame none area			85
frame none finish			-37
frame none fixture			-20
frame none here-after		14
frame none here-before	39	40	-33
frame none material			-22
frame none part			19
frame none size			33
frame none tells			-30
frame none tool			-28
frame none verbish			-22
frame none word			-15
frame owed +1	-30	-17
frame owed -1	13	-49	39
frame owed -2		-34	24
frame owed -3	-7	-32	-17
frame owed -4	-23	-39	-49
frame owed area			-8
frame owed defect			-19
frame owed finish			-46
frame owed fixture			36
frame owed here-after	-25	71
frame owed here-before	59	53	7
frame owed part			55
frame owed size			-46
frame owed surface			28
frame owed tells			-30
frame owed tool			-28
frame owed verbish			-12
frame owed word			-18
frame past +1	-19	-22
frame past -1		-12	35
frame past -2	16	-8
frame past -3	-22		-11
frame past -4	-10	-20	-48
frame past area			-27
frame past defect			-26
frame past finish			-16
frame past fixture			18
frame past here-after		21
frame past here-before	43	37	56
frame past material			35
frame past part			35
frame past size			13
frame past tells			-10
frame past tool			-14
frame past verbish			-30
frame past word			-20
frame past work			-14
frame present +1	-26	-27
frame present -1	21	22
frame present -2		-8
frame present -3	8	-9
frame present -4	-29	-18	-13
frame present defect			9
frame present finish			-27
frame present fixture			71
frame present here-after		-8
frame present here-before	18	38	42
frame present part			-53
frame present size			10
frame present surface			13
frame present tells			-26
frame present tool			11
frame present verbish			-13
frame present word			-18
heading		7
heading +1	-23
heading -1		-12	-8
heading -2	-11	38
heading -3		19	-12
heading -4		-9	8
heading here-before	43	40
join	-13	-28	-16
join +1	-6	-13	-11
join +1 area	-9
join +1 finish	-12	-6	8
join +1 fixture			-15
join +1 size			10
join +1 surface			8
join +1 tells	10		-11
join +1 tool	-7		-16
join +1 verbish			-7
join +1 word			-11
join +1 work			-10
join -1	-10
join -1 area		8	22
join -1 defect	-8		-13
join -1 finish	-7	-7	-20
join -1 fixture		14	23
join -1 part	12		-9
join -1 size	-9	-8
join -1 surface	-8
join -1 tells	-9		-10
join -1 verbish	-9
join -1 work			-6
join -2			-11
join -2 area	-6	-6	-17
join -2 defect	-7
join -2 finish			-7
join -2 fixture	8	7
join -2 material		-6	-9
join -2 size	-8		-10
join -2 surface			18
join -2 tool		-6	-7
join -2 verbish			-6
join -2 word			-10
join -2 work	-13		-7
join -3	-16	-20	-17
join -3 area			-12
join -3 defect	-8		-10
join -3 finish		-7	-13
join -3 fixture		-10
join -3 material	-8	-7	-8
join -3 part	-10	-7	-12
join -3 size	-11	-7	-12
join -3 surface		-8	-17
join -3 tool	-7	-7	-18
join -3 verbish			-6
join -3 word	-6	-7
join -3 work	-8	-9	-17
join area	-10
join area+area	-6		-27
join area+finish			20
join area+fixture			-10
join area+size			23
join area+surface			9
join area+tells	-7
join area+tool		-7	-18
join defect	-9	-7	-9
join defect+area			-7
join defect+size	-7
join defect+tool			-7
join finish	-11	-7	-9
join finish+area			16
join finish+fixture			-8
join finish+size	-21
join finish+surface			-6
join finish+tells	-16
join finish+tool	-11		6
join finish+verbish			-8
join finish+word	7		-6
join fixture+finish			-15
join fixture+fixture			8
join fixture+part			9
join fixture+size	14
join fixture+tells	30	8	24
join fixture+tool			-17
join fixture+verbish	8		-6
join fixture+work	-13		-13
join heading	-8
join leads 	9
join leads along		-11	-20
join leads around			21
join leads at	7
join leads at quantity to	-12
join leads at term word	8
join leads at word	10	16	-7
join leads at word term			-9
join leads at word verb		-11
join leads at word word	-6	-21	11
join leads behind	23
join leads by		17	73
join leads by term quantity		16
join leads by term verb			6
join leads by term word			9
join leads for			12
join leads for word		15
join leads from	-7	9
join leads in word	11
join leads into word at		7
join leads near		7
join leads of			6
join leads of term word	-11
join leads of word verb		-10
join leads off		11	8
join leads on quantity			6
join leads on term verb		9
join leads on word word	-8		-11
join leads over	17		15
join leads over term word			10
join leads quantity at			-9
join leads quantity of		-24
join leads quantity of quantity			-11
join leads quantity of word		18
join leads quantity word quantity			-9
join leads term at			7
join leads term by	-19
join leads term on			10
join leads term quantity at		-7
join leads term verb		-13
join leads term word			-13
join leads time			8
join leads to			-6
join leads to verb			-10
join leads verb at quantity			-7
join leads verb behind	-7		-10
join leads verb in		6	8
join leads verb off		30
join leads verb on		-10	-12
join leads verb out quantity			-20
join leads verb quantity of		-16
join leads verb quantity word	19
join leads verb to	11
join leads verb under		24
join leads verb verb at		-6
join leads verb verb word			-10
join leads verb with		27	47
join leads verb word term	-11
join leads with			-8
join leads word in			11
join leads word on	11
join leads word on quantity			-7
join leads word quantity	-7		-14
join leads word quantity of	-7
join leads word quantity word	-6	-9	-18
join leads word term	19
join leads word term at		8
join leads word term verb	-14	18	15
join leads word verb at		-7
join leads word verb in			-12
join leads word verb quantity	7		-12
join leads word verb word		-7	7
join leads word word	8
join leads word word quantity	-12	-8	-10
join leads word word verb			-11
join leads word word word		-6	8
join links 	11
join links along		-41	-47
join links around		7	21
join links at	18	12
join links at quantity	14		12
join links at quantity to	-23
join links at quantity word	-7	-8
join links at term word	58
join links at word	69	13
join links at word term	-13	-6	-10
join links at word verb		-16
join links at word word	-23	-15	51
join links before			-13
join links behind	19	16	37
join links behind word word	9
join links by		30	55
join links by term			13
join links by term quantity		11
join links by term verb	24		23
join links by term word	15		14
join links for	18	15	41
join links for word		10
join links from		11
join links in	19	21	19
join links in term verb		-7	21
join links in term word	15
join links in verb behind		13
join links in word	7
join links in word term	6
join links in word word		-7
join links into word at		7
join links mark	8		7
join links mark quantity	-9
join links near		39
join links of	21	12	29
join links of term word			-13
join links of word verb		-9
join links on	13	17	18
join links on quantity	-15		12
join links on term verb		51
join links on verb word	-10
join links on word		10	-7
join links on word word	-24		-21
join links over	13	27	9
join links over term word			50
join links quantity at	-7	-20	-24
join links quantity by quantity	15
join links quantity from	-38	-13
join links quantity mark		-8
join links quantity of	21	-11
join links quantity of quantity			-13
join links quantity of word		9
join links quantity on	26
join links quantity over	14
join links quantity term to	-15
join links quantity term word	-10
join links quantity word at	-24
join links quantity word quantity			-16
join links quantity word to	-13
join links quantity word word	-10
join links term	13	-6
join links term at	21		23
join links term by	-9
join links term on			24
join links term quantity at	-24
join links term word	16	-9	-26
join links term word word		-7
join links to	10	8	8
join links to term word	40	-6
join links to verb			-9
join links under	-14	16	24
join links verb	18
join links verb at		-11	79
join links verb at quantity	10	-14	-7
join links verb behind	-15	-22	-51
join links verb by	-7	-19
join links verb from		-7
join links verb in			-8
join links verb mark		40
join links verb off		11
join links verb on	17	16	-8
join links verb out	28
join links verb out quantity		-13	-47
join links verb quantity	27
join links verb quantity at	21
join links verb quantity in			-7
join links verb quantity off	47
join links verb quantity word	9
join links verb term word	-13	-26	-17
join links verb to	14
join links verb under		31
join links verb verb		-9	-14
join links verb verb at		-9
join links verb verb on		-8
join links verb verb out		-6	-11
join links verb verb quantity	-16	8
join links verb verb word		18	-10
join links verb with	8		24
join links verb word	7		6
join links verb word quantity	12
join links verb word term	-8	-13
join links verb word word		-9
join links with			-9
join links with quantity	25
join links word	-6
join links word in verb		16
join links word on	11
join links word on quantity			-16
join links word quantity	-16		-8
join links word quantity at	30
join links word quantity of	-7	-10	-8
join links word quantity off	-8
join links word quantity on	-15	10
join links word quantity word	-37	-21	-19
join links word term	29		7
join links word term at	22	51
join links word term verb	-24		-9
join links word term word		13
join links word verb		-7	6
join links word verb about		-7
join links word verb at		-18	-25
join links word verb in	10		-33
join links word verb on	9	15
join links word verb quantity	46	-12	-25
join links word verb verb	-18	-16
join links word verb word	-16	9
join links word word		-6	10
join links word word quantity	-13		-10
join links word word term			9
join links word word to	-8
join links word word verb	-8		-17
join links word word word	-7	11
join material		-12	10
join material+area		-6
join material+defect	8	-8
join material+finish			-8
join material+fixture		13	33
join material+material		-8
join material+part		-7
join material+surface			14
join material+tells		-7	-12
join material+tool		-6
join material+verbish			-6
join material+word			-7
join material+work		-8	-9
join part		-15	-12
join part+area	-6		-7
join part+defect	-7		-19
join part+fixture			11
join part+material	7
join part+part		-11
join part+size	14
join part+surface			-8
join part+tells			-14
join part+tool	9	-7
join part+verbish	-7
join part+word	-7
join part+work			-10
join same-after	18		14
join same-after area		8	8
join same-after defect	12	-10
join same-after finish			27
join same-after fixture	11	19	25
join same-after material	17		14
join same-after part		10	27
join same-after size	28	7
join same-after surface	23	11
join same-after tells	-13	-8	-19
join same-after tool	8		17
join same-after verbish	6
join same-after word	-10
join same-before finish			-11
join same-before size	16		8
join same-before surface			7
join same-before tells	-13		8
join same-before tool			11
join size	10
join size 1		-6
join size 2	-13	-25	-28
join size 3		-16	-13
join size+area		12	29
join size+defect	-9		-9
join size+finish	-28	-10	-11
join size+fixture	17
join size+part			12
join size+size	-19
join size+surface			-11
join size+tells	11	-8
join size+verbish	7	9	12
join size+word		-6	-16
join sizes 1+1			18
join sizes 1+2	-8	-11	-22
join sizes 1+3		-13	6
join sizes 2+1		-21	-23
join sizes 2+2	-10		-9
join sizes 2+3	-13	-11	-14
join sizes 3+1	6	-11	-12
join sizes 3+2	-9	-8
join sizes 3+3	-15		-15
join surface		7	8
join surface+area	-7	15	27
join surface+defect	10
join surface+fixture		13
join surface+part		8
join surface+size	-8
join surface+surface		7	11
join surface+tool	-13
join tells	-9		-14
join tells+finish	-11
join tells+fixture	17	34	12
join tells+part			-7
join tells+tells			-15
join tool	-8
join tool+area			-20
join tool+finish	-12		35
join tool+part	7
join tool+size	19
join tool+surface	-13	-8
join tool+verbish		16
join verbish	-8	-8	-12
join verbish+area			31
join verbish+defect	-7
join verbish+finish			-13
join verbish+fixture	9
join verbish+material			-6
join verbish+tells	-9
join verbish+tool	-9	7
join verbish+verbish			-14
join verbish+word			-10
join word			-15
join word+finish	7
join word+size			-15
join word+surface	6
join word+tells	-10
join word+verbish	-7
join word+word	-10		-6
join work	-9	7	-18
join work+area		8
join work+fixture	-8	19	-8
kind +1 area	-12	-18
kind +1 defect	-8	-9
kind +1 finish	-7	-13
kind +1 fixture	-12	6
kind +1 material	-17	-10
kind +1 part	-25	-6
kind +1 size	-19	-22
kind +1 surface	-21	-11
kind +1 tells	-6	-15
kind +1 tool	-13	-12
kind +1 verbish		-23
kind +1 word	-11	-14
kind -1 area	-13		19
kind -1 defect	-36	-17	-21
kind -1 finish	-41	-35
kind -1 fixture	42	14	39
kind -1 material	33		14
kind -1 part	25	12	72
kind -1 size	30	8	43
kind -1 surface	6	7	21
kind -1 tells	-21	-29	-42
kind -1 tool	-11		-23
kind -1 verbish	-13		-22
kind -1 word	-11		-14
kind -2 area	-36	-18	22
kind -2 defect	-10	-17	-13
kind -2 finish	-34	-28	-37
kind -2 fixture	37	7	34
kind -2 material	14		23
kind -2 part			14
kind -2 size	24	-18	-15
kind -2 surface		15
kind -2 tells	-14	14	-46
kind -2 tool	-13	-36	-53
kind -2 verbish	-8		-10
kind -2 word	-7	-8
kind -2 work	-23	-16
kind -3 defect	-9	-8	-9
kind -3 finish	-7		-35
kind -3 fixture		10	20
kind -3 material		-7	19
kind -3 part			24
kind -3 size	-36	-17	-52
kind -3 surface	-23	-14	26
kind -3 tells	-8	-7	-39
kind -3 tool	-10	-15	-29
kind -3 verbish		-13	14
kind -3 word		-10	-33
kind -3 work	-7	-8
kind -4 area	-7		-15
kind -4 defect	-6		-14
kind -4 finish		-8	-11
kind -4 fixture	-16	-8	-10
kind -4 material	-11	-7	-7
kind -4 part		-17	-30
kind -4 size	-10	-12	-11
kind -4 surface	-19	-15	-14
kind -4 tells			-18
kind -4 tool	-6	-17	-23
kind -4 verbish		8
kind -4 word		-7	-6
kind -4 work		-8	-14
kind area	-14
kind defect	-16	-21	-20
kind finish	-22	-21	-29
kind fixture	16	16	22
kind here-after area	-8	39
kind here-after defect	-8	-21
kind here-after finish	-13	-13
kind here-after fixture	-24	20
kind here-after material		38
kind here-after part	15	43
kind here-after size		47
kind here-after surface		38
kind here-after tells	-10	-27
kind here-after tool	9	-16
kind here-after verbish	-9
kind here-after word	-8
kind here-before area	-12	-17	-46
kind here-before defect		40	-10
kind here-before finish	16	-6
kind here-before fixture	26	33	31
kind here-before material	26	47	14
kind here-before part	65	46	48
kind here-before size	31	15	16
kind here-before surface	48	17	-23
kind here-before tells	-25
kind here-before tool	-35	49	45
kind here-before verbish	13	-28	-30
kind here-before word	13	-22	-24
kind material	13	11	17
kind part	14	23	32
kind size	12
kind surface		7
kind tells	-18	-15	-43
kind tool	-14	-9	-24
kind verbish			-6
kind word	-9	-15	-22
kind work	-16	-14	-34
lead a -1	-16	-7
lead a -2	43	-35
lead a -3	-37	-6
lead a -4	-22
lead a here-after	47	26
lead a here-before	-20	32
lead about -3	-15
lead about -4	-26
lead about here-after	26
lead about here-before	37
lead area -1		-27
lead area -2		20
lead area -3		-12
lead area -4		-14
lead area here-after		35
lead area here-before		-7
lead at -2	-19
lead at -3	-20
lead at -4	-24
lead at here-before	67
lead by -1	-18
lead by -2	8
lead by -3	-8
lead by here-after	-11
lead by here-before	38
lead defect -1	-21
lead defect -3	-7
lead defect -4	-9
lead defect here-before	25
lead fixture -1	-31	-13
lead fixture -2	-8	-8
lead fixture -3	-17	-10
lead fixture -4	-6
lead fixture here-after	-10	-18
lead fixture here-before	52	40
lead for -1	23
lead for -2	-28
lead for -4	-6
lead for here-before	37
lead in -1	8
lead in -2	30
lead in -4	-18
lead mark -1	11
lead mark -2	-14
lead mark here-before	31
lead material -1	12	11
lead material -2	-21	-12
lead material -3		-9
lead material -4	-8	-11
lead material here-after		-19
lead material here-before	14	29
lead number -1		39
lead number -2		51
lead number -4		-31
lead number here-after		-40
lead number here-before		-14
lead of -2	-23
lead out -2	-66
lead out -4	-26
lead out here-before	66
lead over -1	-13
lead over -2	10
lead over -3	31
lead over here-before	-6
lead part -1	-31	-16
lead part -2	-8	-11
lead part -3	-9	-12
lead part -4	-9	-6
lead part here-after		-8
lead part here-before	47	36
lead quantity -1		43
lead quantity -2		-8
lead quantity -3		-10
lead quantity -4		-18
lead quantity here-after		-22
lead quantity here-before		75
lead role -1		-81
lead role here-after		78
lead size -1	-16	-40
lead size -2	8
lead size -4	-14
lead size here-after	-9	38
lead size here-before	32
lead surface -1	21
lead surface -2	-19	-12
lead surface -3	-20	-13
lead surface -4	-11	-11
lead surface here-after	-8	-11
lead surface here-before	26	34
lead that here-after		22
lead the -2		-38
lead the -3		-15
lead the -4		-30
lead the here-after		72
lead the here-before		-26
lead to -2	19
lead to -4	-22
lead to here-before	24
lead tool here-after		-57
lead tool here-before		41
lead up -2	-25
lead up -3	20
lead up -4	-25
lead up here-before	36
lead verbish -1	10	17
lead verbish -2		-19
lead verbish -3	-16	13
lead verbish -4	-14	-11
lead verbish here-after	-12	-25
lead verbish here-before	41	31
lead word -1	9
lead word -2	17	11
lead word -3	-10	-7
lead word -4	-19	-25
lead word here-after	-16	9
lead word here-before	27	28
lemma be object	-19	-18
lemma be subject	31	41
lemma be subject-late		-8
lemma crack subject		33
lemma cut object	8
lemma drip object		-24
lemma drip subject		27
lemma find object		74
lemma get subject		69
lemma go object		32
lemma go subject	13	14
lemma have object		-8
lemma have subject	43	33
lemma have subject-late		-15
lemma hum subject		25
lemma leave object		35
lemma measure subject	26
lemma measure subject-late	-7
lemma pull object		16
lemma read object	-33
lemma read subject	15
lemma run object		19
lemma run subject		12
lemma say object		121
lemma say subject	-11
lemma sit object	16	-9
lemma sit subject	55	52
lemma stick subject		28
lemma turn subject		-30
lemma want object	11
lemma want subject	-12
lemma weep subject		23
not-carried	-35
not-carried +1 none	-8
not-carried +1 own	-12
not-carried +1 pointer	-21
not-carried +1 tells	-18
not-carried -1 own	-27
not-carried -1 person	-37
not-carried -1 pointer	-15
not-carried -1 tells	-14
not-carried -2 none	-37
not-carried -2 own	-10
not-carried -2 pointer	-55
not-carried -2 tells	-38
not-carried -3 none	-13
not-carried -3 own	-11
not-carried -3 person	-18
not-carried -3 pointer	-28
not-carried -3 tells	-24
not-carried -4 own	-10
not-carried -4 person	-18
not-carried -4 pointer	-26
not-carried -4 tells	-13
not-carried here-after none	11
not-carried here-after pointer	-6
not-carried here-before none	33
not-carried here-before own	32
not-carried here-before pointer	31
not-carried here-before tells	-44
not-told		-32
not-told +1		-12
not-told -1		6
not-told -2		-13
not-told -4		-9
not-told here-after		-19
not-told here-before		43
number many many			62
number many one			-56
number none many			13
number one many			-12
number one one			8
opens-with +1	-45
opens-with -1	60	-10
opens-with -2		-14
opens-with -3	-16	-16
opens-with -4	-19	-23
opens-with here-after		42
part +1 bare	-13	-6
part +1 object	-14	-18
part +1 opens	-23
part +1 subject	-16	-9
part +1 subject-late	-14	-19
part -1 bare	-21	-10	-35
part -1 object	-17
part -1 opens	30		39
part -1 subject	37		33
part -1 subject-late	-13	-8	11
part -2 bare	-15	-28	-9
part -2 object		-9
part -2 opens		10
part -2 subject	11		20
part -2 subject-late		-13	8
part -3 bare	-22
part -3 object	-10	-7	-13
part -3 opens			10
part -3 subject	-7	-8	9
part -3 subject-late	-15	-18	16
part -4 bare	-8		-6
part -4 object	-11	-18	-22
part -4 opens		-14	6
part -4 subject	-15		-15
part -4 subject-late	-13	-7	-35
part bare	-15	-17	-17
part bare area		-14	-7
part bare defect	-16	-14	-28
part bare finish			16
part bare fixture	8	-7	-35
part bare material	7	-7	-25
part bare part		38	36
part bare size	-11	7	18
part bare surface	-24	-13
part bare tells	-6
part bare verbish		16	21
part bare word	-15	-24	-18
part bare work	-8
part here-after bare		-14
part here-after object	-10
part here-after opens		69
part here-after subject		84
part here-before bare	18		7
part here-before object	16	26	-18
part here-before opens	39	44	-41
part here-before subject	38	27	30
part here-before subject-late		8	-32
part object	-24	-16	-17
part object area	-16		-10
part object defect	-18	-21	-14
part object finish	-26	-32	-31
part object fixture		19	34
part object material			-8
part object part	7	20	37
part object size	18		10
part object tells	-24	-19	-22
part object tool	-12	-20	-24
part object verbish	-17	-13	-11
part object word	-8	-11	-19
part object work		-13
part opens	19	18	18
part opens area	-8		34
part opens defect		-22	11
part opens finish	-8	12	-26
part opens fixture	23	27	46
part opens material	37	15	26
part opens part	28	13	24
part opens size	15	6	7
part opens surface	8	34	29
part opens tells	-8	27	-34
part opens tool		-40	-17
part opens verbish	46	35
part opens word	-11		-20
part opens work	-10	10	-27
part subject	23	17	20
part subject area	-19	36
part subject defect	-8	-20	-65
part subject finish		17
part subject fixture	25	18	25
part subject material	16	18	41
part subject part	8	15	13
part subject size	9		-40
part subject surface	26	12	13
part subject tells	-15	-29	-67
part subject tool	-23	56	-28
part subject verbish	18	-12	-13
part subject word	16	-8	14
part subject work	-16	-17	-16
part subject-late	-10		-7
part subject-late area	-16	-24
part subject-late defect	-16	24	-8
part subject-late finish	-8
part subject-late fixture	15	-12
part subject-late material	-9	27	29
part subject-late part	14	-16	17
part subject-late size	42	8
part subject-late surface	-23		-32
part subject-late tool	-18		22
part subject-late verbish	8	21	-12
part subject-late word	-20	-8	-29
points em -1			11
points em -2			40
points em -4			-63
points em bare			-38
points em here-before			18
points em object			15
points em subject			12
points it -2			11
points it -4			-10
points it bare			-33
points it here-before			-12
points it object			-20
points it opens			14
points it subject			31
points it subject-late			-10
points none -1			24
points none -3			-9
points none -4			-20
points none bare			-10
points none object			-36
points none opens			28
points none subject			21
points one -1			36
points one -2			-6
points one -3			-14
points one -4			-35
points one here-before			25
points one opens			-22
points one subject			7
points one subject-late			6
points that -1			26
points that -2			8
points that -3			17
points that -4			-48
points that here-before			9
points that subject			8
points that subject-late			-29
points them -1			69
points them -3			-17
points them -4			-70
points them bare			-12
points them object			37
points them opens			-30
points them subject			-21
points them subject-late			12
points they -1			18
points they -2			13
points they -3			-48
points they object			-31
points they opens			20
points they subject			19
points they subject-late			13
points those -2			7
points those -3			55
points those -4			-56
points those opens			40
points those subject			-43
prep about		-11
prep above		13	-13
prep across	-12	-26
prep after	-40	-49	-14
prep along	-27	49	8
prep around	-32	40	38
prep at	-23	-20	-22
prep before	-23	-22	-28
prep behind	-32	-28	-20
prep below	-15	-50	-17
prep by	-44	-36	-54
prep down		59	13
prep for	-26	-14	-31
prep from	-32	-24	-37
prep here-after at		-21
prep here-after before	-9
prep here-after behind		-43
prep here-after below		-55
prep here-after by	-15	-21
prep here-after down		33
prep here-after for	-20	-28
prep here-after from		-13
prep here-after in	-13	34
prep here-after of	-10	-11
prep here-after off		88
prep here-after on		18
prep here-after out		-25
prep here-after over	-9	-17
prep here-after to	-12	-61
prep here-after toward	-20
prep here-after under		-32
prep here-after with	-8	-37
prep here-before at	-58	-19	22
prep here-before by	-81	-79
prep here-before for	-44	6
prep here-before from	-76
prep here-before in	-10	-36	-18
prep here-before of	36	-7	-42
prep here-before on	-27	-15	-19
prep here-before over		-46
prep here-before to	-18	-30	-24
prep here-before under		-49
prep here-before with	-32	-24
prep in	-12	-9	-17
prep into	-12
prep near	-37	-37	-52
prep of	-10	-15	-21
prep off	-20	9
prep on		-9	-8
prep other above	-13		-13
prep other after	-42	-7	-14
prep other along	-33	17	8
prep other around	-27	-10	38
prep other at	-18	-14	-24
prep other before	-15	-17	-28
prep other behind	-40		-20
prep other below		-10	-17
prep other by	-29	-22	-57
prep other down		46	13
prep other for	-14	-12	-31
prep other from	-20	-28	-54
prep other in	-12	-16	-17
prep other into	7	20
prep other near			-52
prep other of	-15	-14	-15
prep other off	-19	-13
prep other on		-15	-6
prep other out	-21	-15	-28
prep other over	-16	-13	-59
prep other to	-21	-17	-42
prep other toward	-19	-21
prep other under	-39	-6	-76
prep other up	25	-17	22
prep other with	-18	-8	-17
prep out	-40
prep over	-13	-28	-66
prep to	-22	-26	-43
prep toward	-38	-59
prep under	-46	-35	-76
prep up	-9		22
prep with	-22	-16	-17
prep without		-42
rank after 0	-10
rank after 1	-9
rank after 2	-12	-7
rank after 3	-13	-15
rank after 4	-18	14
rank before 0	14	18	-12
rank before 1	18	9
rank before 2	8	-10
rank before 3	-11	-8
rank before 4	-22	-14
says copula	12		11
says imperative		11
says modal	-7		-15
says past	-15
says present	-10		-21
sentences -1	-40	-31	-65
sentences -1 bare	-19	-13	-37
sentences -1 object	-9	-16	-26
sentences -1 opens	-31	-21	-55
sentences -1 subject	-27	-17	-20
sentences -1 subject-late	-21	-20	-45
sentences -2	-24	-21	-50
sentences -2 bare	-9	-15	-26
sentences -2 object	-12	-13	-33
sentences -2 opens	-11	-17	-16
sentences -2 subject	-22		-39
sentences -2 subject-late	-8	-7	-6
sentences 1	-21	-33
sentences 1 bare	-13	-32
sentences 1 object		-19
sentences 1 opens	-23	-37
sentences 1 subject	-21	-20
sentences 1 subject-late	-14	-9
size 1	-15	-20	-32
size 2	14	14	34
size 3	23	39	51
stands-off-after	-9	11
subject none +1	-18	-26
subject none -1	8
subject none -2	-7	-11
subject none -3	-9
subject none -4	-12	-13
subject none here-after		15
subject none here-before	39	39
subject own +1	-14	-11
subject own -1	-21	-12
subject own -2		-8
subject own -3	-13
subject own -4	-14	-15
subject own here-after	-7
subject own here-before	41	31
subject person +1	-16	-18
subject person -1	45	-10
subject person -2	-38	-45
subject person -3	-25	-25
subject person -4		13
subject person here-after	-9	40
subject person here-before	20
subject pointer +1	-33	-17
subject pointer -1	40	19
subject pointer -2	20	12
subject pointer -3	-11	-19
subject pointer -4	-37	-28
subject pointer here-after	-17	20
subject pointer here-before	27
subject tells +1	-20
subject tells -1	41
subject tells -2	20
subject tells -3	15
subject tells -4	-14
subject tells here-before	-38
told -1		81
told -2		78
told -4		66
told area		8
told defect		-53
told finish		-17
told fixture		47
told here-after		31
told here-before		22
told material		39
told part		30
told size		19
told surface		41
told tool		-11
told verbish		-8
told word		17
touches-before	24	25
unit area defect	-12
unit area material	81
unit area surface	6
unit area word	-35
unit current defect	-12
unit current part	19
unit current word	-7
unit flow part	37
unit flow word	-13
unit length area	-13
unit length defect	-15
unit length finish	-29
unit length fixture	17
unit length material	7
unit length part	16
unit length size	10
unit length tells	-12
unit length tool	-18
unit length work	-12
unit none area	-9
unit none defect	-17	-21
unit none finish	-18	-21
unit none fixture	21	15
unit none material	22	9
unit none part	17	24
unit none size	20
unit none surface	8	8
unit none tells	-22	-15
unit none tool	-26	-8
unit none verbish	-11
unit none word	-22	-15
unit none work		-14
unit other part	-19
unit other word	-11
unit percent defect	-29
unit percent finish	31
unit percent material	24
unit percent part	-15
unit percent size	-15
unit percent surface	36
unit percent tells	-42
unit pressure area	-11
unit pressure defect	-16
unit pressure fixture	20
unit pressure material	7
unit pressure part	-60
unit pressure size	33
unit pressure surface	32
unit slope material	-17
unit slope surface	21
unit slope word	35
unit temperature material	-8
unit temperature size	18
unit voltage part	58
unit voltage word	-8
use buy	-14	15
use have		-10
use measure			13
use move	-15		-18
use need		-9	-7
use say			-27
use see	35	15	47
use use	-16		-18
use work	-12
where +1	-19	-19
where -1	10		13
where -2		-6	9
where -3	-11
where -4	-17	-16	-26
where here-after	-7	10
where here-before	34	29
whole after at fixture		-11
whole after at material		-23
whole after at part	59	52
whole after at surface	-39	-13
whole after at verbish	15
whole after at word	45	-12
whole after behind defect		-8
whole after behind fixture		-54
whole after by defect		-10
whole after by fixture		-20
whole after end defect		-10
whole after for defect		-8
whole after in area		-10
whole after in defect		-8
whole after in material		13
whole after in word	-9	-18
whole after of material	77
whole after of word	-7
whole after off word	-39
whole after on defect		-11
whole after on surface	37	-24
whole after on tells	-7
whole after on word	-7	-16
whole after out material		-6
whole after quantity defect		-11
whole after quantity fixture		-10
whole after quantity material		-14
whole after quantity surface		31
whole after quantity verbish		-18
whole after term area		8
whole after term defect	-13
whole after term fixture	19	80
whole after term material	14	-7
whole after term part	-15	-22
whole after term size	69
whole after term surface	-13
whole after term verbish		7
whole after term word	-28	-23
whole after to word	-26
whole after with defect		-10
whole after word area		22
whole after word defect	-35	-16
whole after word finish		-10
whole after word fixture		23
whole after word material	-22
whole after word part	-32
whole after word size	43	-8
whole after word surface	-15
whole after word tells	-9	23
whole after word tool		-17
whole after word verbish	11	-16
whole article a	9	-13	16
whole article none	-14	-28	-25
whole article other			-15
whole article the			11
whole behind about +1		-12
whole behind about -1		-39
whole behind about -2		-22
whole behind about -4		-11
whole behind about here-before		-12
whole behind across -1	44
whole behind across here-before	70
whole behind after -2	-21
whole behind at +1	-15	-18
whole behind at -1	-36	-13
whole behind at -2	-13	-26
whole behind at -3	-18	-17
whole behind at -4	-15	-21
whole behind at here-after	44
whole behind at here-before	54	21
whole behind behind +1		-9
whole behind behind -1		62
whole behind behind -2		-21
whole behind behind -3		-10
whole behind behind here-before		8
whole behind below +1	-12
whole behind below -1	6
whole behind below here-after	39
whole behind below here-before	-19
whole behind by +1	-19	-15
whole behind by -1	-20	-35
whole behind by -2	59	-20
whole behind by -3	-25	19
whole behind by -4	28
whole behind by here-after	-31	-8
whole behind by here-before	36	-21
whole behind deep +1	-15
whole behind deep -2	-31
whole behind deep -3	-28
whole behind deep -4	-20
whole behind deep here-before	21
whole behind down +1		-18
whole behind down -1		-20
whole behind down -2		17
whole behind down here-after		7
whole behind down here-before	10
whole behind end +1	-20	-9
whole behind end -1	11
whole behind end -2		-11
whole behind end -3	-9	-13
whole behind end -4	-17	-17
whole behind end here-after		-10
whole behind end here-before	12	18
whole behind for -1	23	34
whole behind for -3	-12	-20
whole behind for -4	-10	22
whole behind for here-after	-54	-31
whole behind for here-before		47
whole behind from +1	-6	-17
whole behind from -1	-28	-20
whole behind from -2		-22
whole behind from -3	-12	7
whole behind from -4		-12
whole behind from here-after	38	13
whole behind from here-before	15	29
whole behind high +1	-14
whole behind high -1	46
whole behind high -3	-21
whole behind in +1	-11
whole behind in -1	37
whole behind in -2		-15
whole behind in -3	-11	-18
whole behind in -4	-13	-22
whole behind in here-after		-26
whole behind in here-before	9	14
whole behind long -1	-7
whole behind long -2	-25
whole behind long -3	-19
whole behind long here-before	44
whole behind mark +1		-15
whole behind mark -1		-22
whole behind mark -2		-7
whole behind mark here-after		34
whole behind number -2		-15
whole behind number here-after		8
whole behind of +1	-16
whole behind of -1	-43
whole behind of -2	-8	52
whole behind of -3	-11
whole behind of -4	-16
whole behind of here-after	57	11
whole behind of here-before	18
whole behind off +1	-12	-14
whole behind off -1	-15	48
whole behind off -2	12
whole behind off -3	-11	-17
whole behind off -4	-10	-9
whole behind off here-after	14	8
whole behind off here-before	11	-7
whole behind on +1	-14	-14
whole behind on -1	-26	-26
whole behind on -2	-35	-11
whole behind on -3	-15	-8
whole behind on -4	-17	-17
whole behind on here-before	-31	-6
whole behind out +1		-19
whole behind out -3		-8
whole behind out -4		-12
whole behind out here-after		-27
whole behind out here-before		-10
whole behind over +1	-17
whole behind over -1	7
whole behind over -2	-27
whole behind over -3	-8
whole behind over -4	-8
whole behind over here-after	-19
whole behind over here-before	14
whole behind quantity -1	-7	19
whole behind quantity -2	-29
whole behind quantity -3		-18
whole behind quantity -4		-28
whole behind quantity here-after	15
whole behind quantity here-before		17
whole behind short +1	-12
whole behind short -1	-19
whole behind short -2	-14
whole behind short -3	-14
whole behind short -4	-16
whole behind short here-after	-29
whole behind short here-before	9
whole behind term +1	-11	-23
whole behind term -1	-7	-7
whole behind term -2	-10	-18
whole behind term -3		-11
whole behind term -4	-16	-26
whole behind term here-after	23
whole behind term here-before	18	-8
whole behind to +1	-19	-23
whole behind to -2	8
whole behind to -3	-10
whole behind to -4	-11
whole behind to here-after		-27
whole behind to here-before	15
whole behind toward here-after	-54
whole behind under +1	-23
whole behind under -1	33
whole behind under here-after	26	-29
whole behind under here-before	34
whole behind up +1		-8
whole behind up -1	-6	31
whole behind up -2		-10
whole behind up -4	-17
whole behind up here-after	85
whole behind up here-before	-48
whole behind wide +1	-13
whole behind wide -1	-21
whole behind wide -2	-27
whole behind wide -3	-7
whole behind wide here-before	8
whole behind with +1		-14
whole behind with -1	23
whole behind with -2	-17	-7
whole behind with -4	-13
whole behind with here-after	-8	-24
whole behind word +1	-19	-14
whole behind word -2	7	-7
whole behind word -3	-7	-8
whole behind word -4	-15	-10
whole behind word here-after	-15
whole behind word here-before	28
whole behind-verb		-9	-8
whole between 	19
whole between about	56
whole between and	-56
whole between are		34
whole between at	10
whole between be	20	-6
whole between by	18
whole between has		8
whole between have		36
whole between is	32	22
whole between maybe	23
whole between measure	-25
whole between read	28
whole between to	7
whole between want	30
whole between were		-10
whole carried	26
whole carried -1 none	9
whole carried -1 own	62
whole carried -1 tells	48
whole carried -2 none	54
whole carried -2 own	56
whole carried -2 pointer	9
whole carried -2 tells	43
whole carried -3 none	-21
whole carried -3 own	9
whole carried -3 pointer	-9
whole carried -4 none	-25
whole carried -4 own	-9
whole carried here-before none	13
whole carried here-before pointer	31
whole counted bare	7
whole counted count	-13	6	37
whole counted current	-9		11
whole counted pack	-11	-15	14
whole counted percent	40	-10	18
whole counted pressure	12
whole counted slope	-17
whole counted time	54	-11
whole counted voltage		-7
whole does be area			39
whole does be defect			-32
whole does be fixture			60
whole does be part			15
whole does be size			-17
whole does be surface			26
whole does be tells			-19
whole does be tool			25
whole does be verbish			-9
whole does call defect			-10
whole does call word			-10
whole does come defect			-37
whole does come fixture			27
whole does come material			-24
whole does come surface			-10
whole does come word			10
whole does cut area			-24
whole does cut defect			38
whole does cut fixture			-21
whole does cut material			-24
whole does cut surface			10
whole does cut verbish			-8
whole does cut word			-24
whole does fill defect			74
whole does fill fixture			-23
whole does fill word			-17
whole does get area			-64
whole does get defect			-17
whole does get finish			-10
whole does get fixture			37
whole does get material			12
whole does get surface			50
whole does get verbish			-14
whole does get word			15
whole does go area			23
whole does go defect			-37
whole does go material			-13
whole does go part			-22
whole does go surface			25
whole does go verbish			-22
whole does go word			29
whole does have area			7
whole does have defect			13
whole does have fixture			-20
whole does have material			-29
whole does have part			23
whole does have verbish			-16
whole does have word			-33
whole does leave material			-13
whole does leave word			-10
whole does let word			-22
whole does look defect			-12
whole does look material			-15
whole does look part			17
whole does move material			-57
whole does move part			-16
whole does move word			27
whole does need material			44
whole does need part			-6
whole does need surface			-11
whole does need word			-21
whole does open defect			66
whole does open material			15
whole does open surface			-9
whole does open word			-21
whole does pull part			-17
whole does pull word			-15
whole does put area			9
whole does put fixture			31
whole does put material			-21
whole does put part			-29
whole does put surface			-39
whole does put word			-29
whole does replace defect			-9
whole does replace material			21
whole does run word			-41
whole does sand defect			30
whole does sand surface			98
whole does sand word			-35
whole does say part			-9
whole does say word			-14
whole does seal material			21
whole does seal surface			12
whole does shim word			-18
whole does snug part			12
whole does snug word			20
whole does swap area			-37
whole does swap defect			-20
whole does swap fixture			38
whole does swap surface			-40
whole does take area			-32
whole does take defect			-17
whole does take fixture			-23
whole does take material			-26
whole does take surface			-20
whole does want material			18
whole does want part			-20
whole does want verbish			17
whole does want word			-24
whole far after 0	36	-8
whole far after 13+	-24	-13
whole far after 2		-7
whole far after 3-4	-11
whole far after 5-7	-14
whole far after 8-12	-21	-6
whole far before 0	18		28
whole far before 1	15	10
whole far before 13+	-26	-26	-19
whole far before 2	15	10
whole far before 5-7	10
whole flawed	-11	-9
whole frame copula +1	-21	-10
whole frame copula -1	-8	9	8
whole frame copula -2	-7	-7	-11
whole frame copula -3	-11	-10
whole frame copula -4	-19	-17	6
whole frame copula area			30
whole frame copula defect			-21
whole frame copula finish			32
whole frame copula fixture			54
whole frame copula here-after	10
whole frame copula here-before	20	10	11
whole frame copula part			9
whole frame copula size			-6
whole frame copula surface			7
whole frame copula tells			-32
whole frame copula tool			-9
whole frame copula verbish			-12
whole frame copula word			-29
whole frame imperative +1	-17
whole frame imperative -1	29	-15	8
whole frame imperative -2	-14	24	33
whole frame imperative -3	-16	-22	-7
whole frame imperative -4	14	-30	-21
whole frame imperative finish			18
whole frame imperative fixture			17
whole frame imperative here-before	22	37	-45
whole frame imperative part			15
whole frame imperative size			22
whole frame imperative surface			9
whole frame imperative tells			-8
whole frame imperative tool			35
whole frame imperative verbish			-16
whole frame imperative word			-29
whole frame modal +1	-17	12
whole frame modal -1	52	-11
whole frame modal -2	-17	12	7
whole frame modal -3	-14	-7	-21
whole frame modal -4	-28	-16	-8
whole frame modal area			-30
whole frame modal defect			-13
whole frame modal fixture			7
whole frame modal here-after	22	17
whole frame modal here-before	48	-12
whole frame modal material			8
whole frame modal surface			27
whole frame modal tells			-22
whole frame modal tool			-44
whole frame modal verbish			14
whole frame modal word			-23
whole frame none +1	-19	-24
whole frame none -1			27
whole frame none -2		-11	-26
whole frame none -3	-11	-8	6
whole frame none -4	-22	-15	-9
whole frame none area			31
whole frame none defect			-11
whole frame none finish			-25
whole frame none fixture			-8
whole frame none here-after	11	-16
whole frame none here-before	7	8
whole frame none material			17
whole frame none part			23
whole frame none size			26
whole frame none surface			7
whole frame none tells			-21
whole frame none tool			-10
whole frame none word			-28
whole frame owed +1	-8	-16
whole frame owed -1	-19	-50	-27
whole frame owed -2	-8	-29	32
whole frame owed -3	-19	-24
whole frame owed -4	19	-23	-16
whole frame owed defect			-24
whole frame owed finish			-40
whole frame owed fixture			26
whole frame owed here-after	-34
whole frame owed here-before	37	41	30
whole frame owed part			-19
whole frame owed size			-17
whole frame owed surface			38
whole frame owed tells			-22
whole frame owed tool			-29
whole frame owed verbish			-15
whole frame owed word			16
whole frame past +1	-18	-19
whole frame past -1		-13
whole frame past -2		-10	-22
whole frame past -3	-23	-16	-38
whole frame past -4	-18	-12	-34
whole frame past defect			-27
whole frame past finish			-11
whole frame past here-after	10	12
whole frame past here-before	17	9	26
whole frame past part			-20
whole frame past size			-12
whole frame past surface			-9
whole frame past tells			24
whole frame past verbish			-33
whole frame past word			-24
whole frame present +1	-21
whole frame present -1	7		9
whole frame present -2	11	-24
whole frame present -3		-12	19
whole frame present -4	-23	-15	-20
whole frame present area			17
whole frame present defect			34
whole frame present finish			-14
whole frame present fixture			7
whole frame present here-after	36
whole frame present here-before	32		-9
whole frame present material			-32
whole frame present part			-17
whole frame present tells			-22
whole frame present tool			7
whole frame present verbish			-24
whole frame present word			13
whole heading	-8
whole heading +1	-17	-18
whole heading -1	-17
whole heading -2	-11	7
whole heading -3	26
whole heading -4	-9		12
whole heading here-after		-11
whole heading here-before		-6
whole is-flaw		-12
whole kind +1 area	-7	-21
whole kind +1 defect	-17	-13
whole kind +1 finish	-10	-17
whole kind +1 fixture	-15	9
whole kind +1 material	-13
whole kind +1 part	-17
whole kind +1 size	-11	9
whole kind +1 surface	-17	-13
whole kind +1 tells	-12	-17
whole kind +1 tool	-8	-13
whole kind +1 verbish	-9	-19
whole kind +1 word	-14	-16
whole kind -1 area		30	38
whole kind -1 defect	-26	-27	-15
whole kind -1 finish	-15	-29	29
whole kind -1 fixture	21	61	12
whole kind -1 material	8	-11	10
whole kind -1 part	25		9
whole kind -1 size		-25	7
whole kind -1 surface			23
whole kind -1 tells	-13	-19	-17
whole kind -1 tool		-27	-11
whole kind -1 verbish	-18	-15
whole kind -1 word	-14	-9	-18
whole kind -2 area	-23	-15	-15
whole kind -2 defect		-11	-25
whole kind -2 finish	-17
whole kind -2 fixture	44	12	28
whole kind -2 material		-13	-10
whole kind -2 part	7	-7	7
whole kind -2 size	-17	-8	11
whole kind -2 surface	-13	7	12
whole kind -2 tells	-6	-8	-11
whole kind -2 tool	-14	-14	6
whole kind -2 verbish	7		-18
whole kind -2 word	-6	-10
whole kind -2 work	-23	-10
whole kind -3 defect	-15	-7	12
whole kind -3 finish		-7	-26
whole kind -3 fixture	-18	-12	19
whole kind -3 material	-11	-8
whole kind -3 part	-12	-8	-12
whole kind -3 size	-22	-9	8
whole kind -3 surface		-11
whole kind -3 tells			-20
whole kind -3 tool	-10	-12	-22
whole kind -3 verbish	-10	-9	-16
whole kind -3 word		-6	-18
whole kind -3 work	-16	-10
whole kind -4 area		-6	14
whole kind -4 defect	-8		-14
whole kind -4 finish	-9	-10	-21
whole kind -4 fixture	6	-9
whole kind -4 material	-10	-9	-13
whole kind -4 part	-13	-9	-15
whole kind -4 size	-13	-9	-20
whole kind -4 surface	-15	-10
whole kind -4 tells	-7	-6	-13
whole kind -4 tool	-11	-7	-22
whole kind -4 verbish	-7		-14
whole kind -4 word	-9	-9	-8
whole kind -4 work		-9	-26
whole kind area	-9		8
whole kind defect		-18	-13
whole kind finish	-16	-13
whole kind fixture	9	16	16
whole kind here-after area	-24	25
whole kind here-after defect	-16	-12
whole kind here-after finish	-24
whole kind here-after fixture		6
whole kind here-after material	42
whole kind here-after part	-13	7
whole kind here-after size	53	9
whole kind here-after surface	30
whole kind here-after tells	-14	6
whole kind here-after tool	25	-8
whole kind here-after verbish	19
whole kind here-after word	-9
whole kind here-before area	-32
whole kind here-before defect	65	-11	31
whole kind here-before finish		-16
whole kind here-before fixture		14	-30
whole kind here-before material			49
whole kind here-before part	14		19
whole kind here-before size	10	18	10
whole kind here-before surface	32	17	-27
whole kind here-before tells	12
whole kind here-before tool	-28	15	7
whole kind here-before verbish			-21
whole kind here-before word	11		-12
whole kind material		-12
whole kind surface			9
whole kind tells	-6	-11	-20
whole kind tool	-8	-13	-11
whole kind verbish		-7	-15
whole kind word	-12	-15	-19
whole kind work	-18	-16	-33
whole lead a -1		6
whole lead a -2	11	-8
whole lead a -3	-20	-17
whole lead a -4	-14	-14
whole lead a here-after	85	-21
whole lead a here-before	-15	-7
whole lead about -3	-11
whole lead about -4	-20
whole lead about here-before	48
whole lead area -1		-32
whole lead area -3		-7
whole lead area -4		-20
whole lead area here-after		10
whole lead at -2	-12
whole lead at -3	-15
whole lead at -4	-25
whole lead at here-after	-12
whole lead at here-before	18
whole lead by -1	-14
whole lead by -2	29
whole lead by -3	-16
whole lead by -4	13
whole lead by here-after	-27
whole lead by here-before	16
whole lead defect -1	-10
whole lead defect -2	-7
whole lead defect -3	-10
whole lead defect -4	-7
whole lead defect here-after	14
whole lead defect here-before	49
whole lead fixture -1	-22	-22
whole lead fixture -2	-25
whole lead fixture -3	-23	-15
whole lead fixture -4	-13	-17
whole lead fixture here-after	-50
whole lead fixture here-before	64	19
whole lead for -1	47
whole lead for -4	-12
whole lead for here-before	44
whole lead in -1	23
whole lead in -2	-13
whole lead in -4	-15
whole lead in here-before	26
whole lead mark -2	-13
whole lead mark here-before	9
whole lead material -1	8
whole lead material -2	-7	-16
whole lead material -3	16	-15
whole lead material -4	-13	-18
whole lead material here-after	25	-30
whole lead material here-before	-19
whole lead number -4		-9
whole lead number here-after		-9
whole lead number here-before		81
whole lead of -2	-15
whole lead out -1	-37
whole lead out -2	-22
whole lead out -4	-7
whole lead over -1	37
whole lead over -2	-18
whole lead over -3	35
whole lead over -4	-7
whole lead over here-before	7
whole lead part -1	-15	-16
whole lead part -2	10	-14
whole lead part -3	-19	-18
whole lead part -4	-34	-13
whole lead part here-after	-74
whole lead part here-before	9
whole lead quantity -2		-25
whole lead quantity -3		-12
whole lead quantity -4		-19
whole lead quantity here-before		29
whole lead role -1		-31
whole lead size -1	-40	-71
whole lead size -2	10
whole lead size -3	9
whole lead size -4	-18
whole lead size here-after		10
whole lead size here-before	8	14
whole lead surface -1	-19	24
whole lead surface -2	-24	6
whole lead surface -3	-27
whole lead surface -4	-14	-27
whole lead surface here-after	-13	-24
whole lead surface here-before	32	11
whole lead that here-after		61
whole lead the -2		-25
whole lead the -3		-21
whole lead the -4		-21
whole lead the here-after		42
whole lead the here-before		15
whole lead to -1	-24
whole lead to -2	42
whole lead to -3	-11
whole lead to -4	-23
whole lead to here-after	-31
whole lead to here-before	54
whole lead tool here-before		19
whole lead up -1	-23
whole lead up -2	29
whole lead up -3	-11
whole lead up here-before	22
whole lead verbish -1	20
whole lead verbish -2	-7	-15
whole lead verbish -3	-23
whole lead verbish -4	-18	-21
whole lead verbish here-after	44
whole lead verbish here-before		8
whole lead word -1	-11	16
whole lead word -3	-14	-15
whole lead word -4	-9	-17
whole lead word here-after	16	-7
whole lead word here-before	25
whole lemma be subject-late	29	43
whole lemma drip object		32
whole lemma find object		56
whole lemma get object	60	-13
whole lemma get subject		-9
whole lemma go object	-26	19
whole lemma go subject		12
whole lemma have object	54
whole lemma have subject-late		36
whole lemma measure object	46
whole lemma measure subject	-6
whole lemma pull object		-16
whole lemma read object	10
whole lemma run object		36
whole lemma run subject		-10
whole lemma say object		19
whole lemma say subject	32
whole lemma sit object	-24	-31
whole lemma sit subject	9
whole lemma turn subject		6
whole lemma want object	16
whole lemma want subject	39
whole not-carried	-28
whole not-carried +1 none	-15
whole not-carried +1 own	-14
whole not-carried +1 pointer	-20
whole not-carried +1 tells	-13
whole not-carried -1 none	-7
whole not-carried -1 own	-30
whole not-carried -1 person	-22
whole not-carried -1 pointer	10
whole not-carried -1 tells	-10
whole not-carried -2 none	-22
whole not-carried -2 own	-21
whole not-carried -2 pointer	-29
whole not-carried -2 tells	-34
whole not-carried -3 none	-8
whole not-carried -3 own	-18
whole not-carried -3 person	-10
whole not-carried -3 pointer	-21
whole not-carried -3 tells	-15
whole not-carried -4 none	-18
whole not-carried -4 own	-11
whole not-carried -4 person	-23
whole not-carried -4 pointer	-21
whole not-carried -4 tells	-11
whole not-carried here-after none	28
whole not-carried here-after own	27
whole not-carried here-after pointer	49
whole not-carried here-before own	13
whole not-carried here-before person	43
whole not-carried here-before pointer	30
whole not-carried here-before tells	36
whole not-told		-31
whole not-told +1		-16
whole not-told -1		11
whole not-told -2		-9
whole not-told -3		-9
whole not-told -4		-14
whole not-told here-after		-11
whole number many many			-13
whole number many one			-31
whole number none one			-23
whole number one many			-16
whole opens-with +1	-17	-12
whole opens-with -2		-15
whole opens-with -3		-10
whole opens-with -4	-19	-12
whole opens-with here-after	47
whole part +1 bare	-15
whole part +1 object	-15	-15
whole part +1 opens	-19	-14
whole part +1 subject	-15
whole part +1 subject-late	-15	-26
whole part -1 bare	7	-16	-7
whole part -1 object	-10		7
whole part -1 opens			-10
whole part -1 subject	10	7
whole part -1 subject-late	-13	10	12
whole part -2 bare	-14	-14	-12
whole part -2 object		-12
whole part -2 opens		-11	-6
whole part -2 subject	-8
whole part -2 subject-late	30	29	52
whole part -3 bare	-16		-14
whole part -3 object	-14	-10
whole part -3 opens			-7
whole part -3 subject	-7	-8
whole part -3 subject-late	-16	-19	-12
whole part -4 bare		-9	-13
whole part -4 object	-15	-14	-20
whole part -4 opens	-11	-9	13
whole part -4 subject		-8	-9
whole part bare		-14	-13
whole part bare area	11		-9
whole part bare defect	-16	-17	-20
whole part bare finish	8	10	36
whole part bare fixture	25		-13
whole part bare material	-6	-15
whole part bare part	-8	-10
whole part bare size	25	-8	6
whole part bare surface	12	-13	21
whole part bare tells	-22
whole part bare verbish	10	-16	-27
whole part bare word	-19		-17
whole part bare work	-7
whole part here-after bare	11	-17
whole part here-after object	9
whole part here-after subject-late	12	25
whole part here-before bare	16	40	48
whole part here-before object	43	13	8
whole part here-before opens			-48
whole part here-before subject			27
whole part here-before subject-late	23	33	-56
whole part object	-7	-19	-9
whole part object area	-19	8	21
whole part object defect		-15	-6
whole part object finish	-17	-14	-11
whole part object fixture		16	19
whole part object material		-13
whole part object part	-8
whole part object size	12
whole part object surface	10
whole part object tells	-25	-7	-13
whole part object tool	-11	-13	-16
whole part object verbish	-6	-6	-14
whole part object word		-11	-18
whole part object work		-12
whole part opens	-7	-11
whole part opens defect	21	-13	-7
whole part opens finish	-15	-16	-26
whole part opens fixture			25
whole part opens material	-9		-7
whole part opens part	11		-15
whole part opens size	-11	-16
whole part opens surface	-14	-19	35
whole part opens tells	6	7	-14
whole part opens tool			-19
whole part opens verbish	-13	-8	-15
whole part opens word	-11	-13	-11
whole part opens work	-21	-7	-24
whole part subject area	-16		11
whole part subject defect	-17	-7	-44
whole part subject finish		-9
whole part subject fixture	6	7
whole part subject part		-7
whole part subject size		-7
whole part subject tells	9	-21	-28
whole part subject tool	8	-10
whole part subject verbish	-10		-10
whole part subject work	-11	-17
whole part subject-late		14	8
whole part subject-late area	-20	-12	-10
whole part subject-late defect	-55	-8	-41
whole part subject-late fixture	27	32	26
whole part subject-late material	21	16	-14
whole part subject-late part	46	15	14
whole part subject-late size	14	28
whole part subject-late surface	13	56	29
whole part subject-late tool	-6		34
whole part subject-late verbish	11		21
whole part subject-late word	-26	-20	-7
whole points em -1			-31
whole points em -2			-11
whole points em -3			-12
whole points em -4			-36
whole points em bare			-53
whole points em here-before			10
whole points em object			-23
whole points em subject			-21
whole points em subject-late			10
whole points it -2			8
whole points it -3			-10
whole points it -4			-7
whole points it here-before			-35
whole points it object			-13
whole points it subject-late			-6
whole points none -2			-19
whole points none -3			-11
whole points none -4			-16
whole points none bare			-20
whole points none here-before			47
whole points none object			-21
whole points none opens			-9
whole points none subject-late			32
whole points one -1			22
whole points one -3			-26
whole points one -4			12
whole points one bare			-16
whole points one here-before			74
whole points one object			22
whole points one opens			38
whole points one subject			14
whole points one subject-late			-18
whole points that -1			21
whole points that -4			-45
whole points that bare			-17
whole points that here-before			25
whole points that object			13
whole points that subject			-20
whole points them -1			39
whole points them -3			-20
whole points them -4			-32
whole points them object			8
whole points them opens			-12
whole points them subject			-7
whole points them subject-late			-21
whole points they -1			-12
whole points they -2			8
whole points they bare			-17
whole points they object			-19
whole points they opens			-12
whole points they subject			-14
whole points they subject-late			39
whole points those -2			-10
whole points those -4			-31
whole points those object			-36
whole points those opens			-13
whole prep about		-10
whole prep above	27	15	23
whole prep across		-10
whole prep after	-20	-26	-12
whole prep along	14	-30	-23
whole prep around		15	42
whole prep at	-6	-10	-7
whole prep before	-21	-18	-15
whole prep behind		37	77
whole prep below	48	-10	-14
whole prep by	-37		-23
whole prep down		20	-19
whole prep for		11	7
whole prep from	-10	-12	-26
whole prep here-after above	27
whole prep here-after at	35
whole prep here-after before	-15
whole prep here-after behind		9
whole prep here-after below	40	-7
whole prep here-after by	-34	-9
whole prep here-after down		7
whole prep here-after for	-40
whole prep here-after from	16
whole prep here-after in	-27	33
whole prep here-after of	37	-9
whole prep here-after off	23
whole prep here-after on	-6	7
whole prep here-after out		-23
whole prep here-after over		9
whole prep here-after to	-31
whole prep here-after toward	-52
whole prep here-after with	-22	-23
whole prep here-before at	-27	11	41
whole prep here-before by	-53	21
whole prep here-before for		45
whole prep here-before in		25	-51
whole prep here-before of	-19
whole prep here-before on		23	-51
whole prep here-before over	11	34
whole prep here-before to	23	72	-20
whole prep here-before under		34
whole prep here-before with	17	10
whole prep in	-9	9	14
whole prep into	8		12
whole prep near	-22		-8
whole prep of		-13	8
whole prep off		-19	-20
whole prep on	-9
whole prep other above	-6	18	23
whole prep other across	-6
whole prep other after		-24	-12
whole prep other along	-33	-7	-23
whole prep other around	7	-10	42
whole prep other at	-11	-17	-10
whole prep other before	-13	-18	-15
whole prep other behind	-18	44	77
whole prep other below		-7	-14
whole prep other by	-22	-7	-22
whole prep other down		19	-19
whole prep other for	7		8
whole prep other from	-21	-18	-27
whole prep other in	-7		18
whole prep other into	24	13	12
whole prep other near			-8
whole prep other of	-14	-16	10
whole prep other off	-21	-18	-20
whole prep other on	-11
whole prep other out	-13	-11	-18
whole prep other over	-26	-6	-25
whole prep other to		-9	-26
whole prep other toward	-18	-23
whole prep other under		-24	-31
whole prep other up	9		-7
whole prep other with	-7	-13	-19
whole prep out		-24	-11
whole prep over	-15	8	-44
whole prep to	-6		-27
whole prep toward	-52	-46
whole prep under	17		-31
whole prep up	-10		-7
whole prep with	-7	-13	-18
whole rank after 0		-11
whole rank after 1	-15
whole rank after 2	-13	-11
whole rank after 3	-10
whole rank after 4	-11	-21
whole rank before 0	13
whole rank before 2	6
whole rank before 3	-11	-7
whole rank before 4	-22	-21	-20
whole says copula		-10
whole says imperative			12
whole says none	-8	-20	-12
whole says owed	-12	-14	-18
whole says past	-10		-10
whole says present		-12
whole sentences -1	-29	-37	-33
whole sentences -1 bare	-22	-19	-19
whole sentences -1 object	-18	-21	-23
whole sentences -1 opens	-15	-19	-18
whole sentences -1 subject	-17	-21	-15
whole sentences -1 subject-late	7	-27	11
whole sentences -2	-25	-25	-27
whole sentences -2 bare	-14	-12	-33
whole sentences -2 object	-13	-14	-27
whole sentences -2 opens	-10	-13	7
whole sentences -2 subject	-18	-10	-8
whole sentences -2 subject-late	-13	-10	-18
whole sentences 1	-23	-20
whole sentences 1 bare	-16	-16
whole sentences 1 object	-9	-11
whole sentences 1 opens	-23	-12
whole sentences 1 subject	-18	-20
whole sentences 1 subject-late	-11	-14
whole size 1		-13
whole size 2	-14	-15	-24
whole size 3	-9	-19
whole subject none +1	-18	-25
whole subject none -1		-7
whole subject none -2		-6
whole subject none -3	-11	-9
whole subject none -4	-16	-13
whole subject none here-after	17	-9
whole subject none here-before	12	9
whole subject own +1	-22	-10
whole subject own -1	-8
whole subject own -2	-6	-13
whole subject own -3	-12	-16
whole subject own -4	-17	-21
whole subject own here-before	18	9
whole subject person +1	-7	12
whole subject person -1	8	-40
whole subject person -2	-26	-18
whole subject person -3	-16	-14
whole subject person -4	46	-15
whole subject person here-after	-51	16
whole subject person here-before	27	-16
whole subject pointer +1	-20	-10
whole subject pointer -1		11
whole subject pointer -2	11
whole subject pointer -3	-17	-8
whole subject pointer -4	-26	-15
whole subject pointer here-after	25
whole subject pointer here-before	36	10
whole subject tells +1	-14
whole subject tells -1	20
whole subject tells -2	-14
whole subject tells -4	-12
whole subject tells here-before	38
whole told -1		24
whole told -2		30
whole told defect		-12
whole told finish		6
whole told fixture		21
whole told size		-9
whole told surface		9
whole told tool		7
whole told word		7
whole touches-after	38
whole touches-before	19
whole unit area defect	7
whole unit area material	26
whole unit area surface	6
whole unit area word	-8
whole unit current defect	-28
whole unit current part	13
whole unit current word	-10
whole unit flow part	-26
whole unit flow word	-46
whole unit length area	-8
whole unit length finish	-21
whole unit length fixture	14
whole unit length tells	-21
whole unit length tool	-7
whole unit length word	-13
whole unit length work	-15
whole unit none area	-8
whole unit none defect	-17	-18
whole unit none finish	-13	-13
whole unit none fixture		16
whole unit none material	-10	-12
whole unit none part	-7
whole unit none surface	30
whole unit none tells	25	-11
whole unit none tool	-15	-13
whole unit none verbish	-6	-7
whole unit none word		-15
whole unit none work		-16
whole unit other word	-9
whole unit percent defect	-13
whole unit percent finish	21
whole unit percent fixture	-18
whole unit percent material	-23
whole unit percent part	-15
whole unit percent surface	28
whole unit percent tells	-51
whole unit percent word	-16
whole unit pressure area	-15
whole unit pressure defect	-15
whole unit pressure fixture	-13
whole unit pressure material	11
whole unit pressure part	-10
whole unit pressure size	8
whole unit pressure surface	-34
whole unit pressure word	-32
whole unit slope material	-20
whole unit slope surface	-23
whole unit temperature area	-7
whole unit temperature defect	-13
whole unit temperature material	-13
whole unit temperature size	-18
whole unit voltage part	70
whole unit voltage word	-12
whole use buy			-11
whole use have	17		13
whole use measure		-8	15
whole use move	-20	-6	-9
whole use need		-17	-10
whole use say		9	26
whole use see		-22
whole use use	-26	-27	-10
whole use work	-9		-23
whole where +1	-20	-13
whole where -2		-9
whole where -3	-13	-10	-10
whole where -4	-16	-18	-16
whole where here-after	10
whole where here-before	20	7	8
`;
