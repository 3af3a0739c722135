/** Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer. */
export const TABLE = `
after about defect		-10
after at area		62
after at defect		-22
after at fixture	-12
after at part	13	25
after at surface	12	27
after at verbish		-23
after at word		12
after behind defect		-20
after behind fixture		-42
after behind word		-14
after by defect		-34
after by fixture	-14	-15
after by part		44
after by word	-15	7
after down defect		-15
after down word	-10
after end defect		-18
after for defect		-19
after from defect		23
after from part		-18
after from surface		-59
after from word	-8	52
after in area		-35
after in defect		-15
after in fixture		46
after in material		32
after in part		78
after in surface		8
after in tool		-13
after in verbish		30
after in word	-11
after mark defect		-10
after mark word		-38
after number word		-20
after of defect		-34
after of material	30
after of surface	24
after of word	-7
after off word		-36
after on defect		-18
after on material	-14	107
after on part		-100
after on size	-10
after on surface	10	48
after on tells	-7
after on word	-13	-41
after out defect		-10
after out material		26
after out surface		45
after out word		-36
after over defect		-13
after over size	-11
after quantity area		10
after quantity defect		-38
after quantity fixture		36
after quantity material		15
after quantity part		53
after quantity size		45
after quantity surface		-56
after quantity tells		-39
after quantity verbish		47
after term area		11
after term defect	-6	-28
after term finish	8	-45
after term fixture	-6	52
after term material	12	-41
after term part	48	54
after term surface	-18
after term verbish	-14	55
after term word		19
after through defect		-16
after to defect		-25
after to part	-12
after to word	-6
after up defect		-16
after up word	-7
after with defect		-14
after word area	-16	57
after word defect	-12	-31
after word finish		18
after word fixture	-22	8
after word material	9	55
after word part	-12	21
after word size	14
after word surface		34
after word tells		-22
after word tool		-20
after word verbish	-12	25
article a		-24	-10
article none	-7	-9	-16
article other	-12	-11	-14
article the	12	26	28
behind about +1		-13
behind about -1		-36
behind about -2		-32
behind about here-before		77
behind above +1	-12
behind above -1	43
behind above -2	-16
behind above here-before	-33
behind across +1	-28
behind across -1	93
behind across -2	-50
behind across -4	-30
behind across here-after	-17
behind after +1	-22
behind after -1	12
behind after -2	-30
behind at +1	-20	-28
behind at -1	-12
behind at -2	26	-29
behind at -3	-7	-21
behind at -4	-18	-25
behind at here-after		6
behind at here-before	30	60
behind before here-after	-15
behind behind +1		-22
behind behind -1		32
behind behind -2		-32
behind behind -3		-17
behind behind -4		-6
behind behind here-after		7
behind below +1	-12
behind below -1	-25
behind below -2	31
behind below here-before	18
behind by +1	-22	-18
behind by -1	-8	-26
behind by -2	-12	-67
behind by -3	-11
behind by -4	10	36
behind by here-after	-8
behind by here-before	43	63
behind centers -1	-58
behind deep +1	-21
behind deep -1	9
behind deep -2	-17
behind deep -3	-34
behind deep -4	-17
behind deep here-after	-11
behind deep here-before	62
behind down +1	-8	-29
behind down -1	10	-54
behind down -2		24
behind down here-after	-19	37
behind down here-before	18	26
behind end +1	-19	-9
behind end -1	11	17
behind end -2	-13	-10
behind end -3	-6
behind end -4	-15	-17
behind end here-after		-17
behind end here-before	35	26
behind for +1	-24	-26
behind for -1	44	104
behind for -2	-34	34
behind for -3	34	-29
behind for -4	-31	-18
behind for here-after	-22	-91
behind from +1	-20	-36
behind from -1	26	-27
behind from -2	-25	-32
behind from -3	-33
behind from -4	11	16
behind from here-after	-12	8
behind from here-before	47	52
behind high +1	-27
behind high -2	28
behind high -3	-24
behind high -4	-12
behind high here-after	-11
behind high here-before	37
behind in +1	-14	8
behind in -2	12	-19
behind in -3		-27
behind in -4	-19	-36
behind in here-after	-9	19
behind in here-before	15	27
behind into here-after		-17
behind into here-before		-30
behind long +1	-19
behind long -1	20
behind long -2	-28
behind long -3	6
behind long -4	-30
behind long here-after	-10
behind long here-before	51
behind low +1	-10
behind low -1	30
behind low -2	-29
behind low -4	-17
behind low here-before	36
behind mark +1		-22
behind mark -1		-47
behind mark -2		68
behind mark -3		-9
behind mark -4		-18
behind mark here-after	-10	-12
behind mark here-before	41	9
behind number +1		-38
behind number -3		-23
behind number -4		-45
behind of +1	-33	-54
behind of -1	18	32
behind of -2	-34	28
behind of -3	-40
behind of -4	-14	-13
behind of here-after	32	-7
behind of here-before	38
behind off +1	-21	-28
behind off -1		-22
behind off -2		-23
behind off -3		-49
behind off -4	-24	48
behind off here-after	-7	47
behind off here-before	50	-16
behind on +1		-28
behind on -1	11	-19
behind on -2		17
behind on -3	30	-26
behind on -4		-14
behind on here-after	-14	16
behind on here-before	-16	32
behind out -1	-13	-39
behind out -2		-45
behind out -3		48
behind out -4		-19
behind out here-after		11
behind out here-before		48
behind over +1	-17	-6
behind over -1		-30
behind over -2	-25	-26
behind over -3		-15
behind over -4	-17	-6
behind over here-after	-14	36
behind over here-before	53	38
behind quantity -1	14
behind quantity -2	-31	9
behind quantity -3	-7	-28
behind quantity -4	-7	-17
behind quantity here-after	-7
behind quantity here-before	30	15
behind short +1	-13	-53
behind short -1	25	-33
behind short -2	-67
behind short -3	-23	68
behind short -4	19
behind short here-after	19
behind short here-before	34	38
behind tall +1	-22
behind tall -1	-50
behind tall -4	30
behind tall here-before	22
behind term +1	-19	-29
behind term -1	8
behind term -2	26	-7
behind term -3	-24	-13
behind term -4	-33	-22
behind term here-after		20
behind term here-before	33	55
behind thick +1	-24
behind thick -1	10
behind thick here-before	-52
behind through +1		-12
behind through -2		-25
behind through -3		-18
behind through -4		-25
behind through here-after		36
behind through here-before		12
behind time -2		-18
behind time -3		-21
behind time here-after		-28
behind to +1	-25	-28
behind to -1	18	-13
behind to -2		-14
behind to -3	-15	-24
behind to -4		-9
behind to here-after	-17
behind to here-before	28	77
behind toward -1	-15
behind toward -2	66
behind toward here-after	-18
behind under +1	-22	27
behind under -1	-16
behind under here-after		-19
behind under here-before	58	15
behind up +1	-24	-16
behind up -1	9	-41
behind up -2	68	-34
behind up -3	-25	-11
behind up -4	-29	-26
behind up here-after	-7	35
behind up here-before	-10	57
behind wide +1	-18
behind wide -1	-45
behind wide -2	9
behind wide -3	-11
behind wide -4	-10
behind wide here-before	63
behind with +1	-9	-15
behind with -1	-45	16
behind with -2		-24
behind with -3	38
behind with -4	-13	-10
behind with here-after	-9	-36
behind with here-before	39	67
behind word +1	-12	-12
behind word -1	-7	-6
behind word -2	10	8
behind word -3	9	-13
behind word -4	-27	-13
behind word here-after		18
behind word here-before	29	8
between 	24	20
between about	-28
between and	-99
between are	23	51
between at	16
between be	9	15
between by	-31
between come		41
between come out	26
between cut	56
between for	8
between get		52
between get a		49
between has a		33
between have		34
between have a		16
between is	44	21
between just		50
between measure	10
between of	43
between only	47	39
between read	20
between run	59
between say	-29
between sit	30
between still		11
between the		-22
between to	45
between up	7
between want	19
between were		29
between with		-10
carried	42
carried -1 none	18
carried -1 person	72
carried -1 pointer	56
carried -1 tells	83
carried -2 none	30
carried -2 pointer	70
carried -2 tells	85
carried -3 none	39
carried -3 own	13
carried -3 pointer	40
carried -4 none	18
carried -4 pointer	57
carried here-before none	28
carried here-before own	35
carried here-before pointer	38
carried here-before tells	7
counted bare		17	16
counted count	-13	12	32
counted current	-22	-19
counted length	-16		-27
counted pack	-9	-7	-9
counted percent		10
counted power	-16
counted pressure	-12	-35	-15
counted slope	-8
counted time		-35	-33
counted voltage	-6	-29
counted volume	-11	-23	-47
counted weight	-8	-14	-27
does ask fixture			35
does ask material			-23
does ask part			18
does ask surface			-55
does ask word			17
does be defect			-7
does be finish			-36
does be fixture			33
does be part			-17
does be size			-39
does be surface			11
does be tells			-32
does be tool			27
does be verbish			20
does blow part			39
does blow word			-47
does bring defect			-14
does bring material			-15
does bring part			-35
does bring word			28
does call area			-42
does call defect			-34
does call material			45
does call part			11
does call surface			8
does call word			-27
does change defect			-11
does change surface			-80
does change word			20
does clean defect			-20
does clean fixture			-8
does clean material			-23
does clean part			51
does clean surface			-15
does come area			12
does come defect			-28
does come fixture			-39
does come material			-16
does come part			45
does come surface			7
does come verbish			66
does come word			6
does cut defect			27
does cut fixture			23
does cut material			32
does cut part			-58
does cut size			-49
does cut surface			7
does cut verbish			-17
does cut word			-6
does dig word			38
does do defect			-18
does do fixture			110
does do material			-90
does do part			23
does do word			-26
does drill defect			45
does dry area			27
does dry material			-98
does dry word			-15
does fill defect			77
does fill fixture			-32
does fill material			27
does fill surface			24
does fill word			-43
does finish word			-50
does fix material			-14
does flush part			14
does flush word			-28
does fre fixture			20
does get area			-36
does get defect			20
does get finish			-31
does get fixture			46
does get material			-8
does get part			22
does get surface			-10
does get tool			-12
does get verbish			-9
does get word			12
does glue area			-13
does glue defect			-8
does glue surface			-25
does glue word			-23
does go area			13
does go finish			-19
does go fixture			8
does go material			39
does go part			51
does go surface			-42
does go verbish			-65
does go word			-7
does hang area			-31
does hang defect			-39
does hang fixture			20
does hang material			35
does hang part			78
does hang word			-37
does has material			87
does have defect			32
does have fixture			-17
does have material			16
does have part			19
does have surface			-12
does have tool			34
does have verbish			-11
does have word			-36
does leave material			23
does leave part			-26
does leave surface			29
does leave word			15
does let material			19
does let surface			-33
does let word			14
does look defect			-26
does look fixture			53
does look material			-36
does look part			43
does look surface			-11
does look word			-35
does make defect			48
does make material			-23
does measure word			-23
does move area			8
does move material			-26
does move part			22
does move surface			-41
does move word			15
does need defect			-15
does need fixture			-9
does need material			9
does need part			79
does need surface			-22
does need verbish			-25
does need word			-9
does open area			10
does open defect			59
does open fixture			39
does open material			-14
does open part			14
does open surface			-10
does open word			-48
does order word			-49
does paint material			22
does patch surface			-29
does pick word			69
does plane defect			-16
does plane fixture			45
does plane surface			-39
does plane word			-41
does plug word			73
does pull defect			-21
does pull fixture			-7
does pull material			-10
does pull part			37
does pull surface			-26
does pull word			-38
does put area			-31
does put defect			-14
does put finish			-22
does put material			25
does put part			62
does put size			62
does put surface			-24
does put verbish			-19
does put word			-52
does replace defect			-26
does replace surface			20
does replace word			8
does reset defect			-17
does reset material			77
does reset word			-32
does rip defect			38
does rip material			-51
does run defect			57
does run fixture			42
does run material			-83
does run part			34
does run word			-33
does sand area			18
does sand fixture			42
does sand material			-64
does sand surface			77
does sand verbish			9
does sand word			-84
does say area			31
does say defect			-21
does say fixture			42
does say material			-20
does say part			30
does say verbish			-51
does say word			-8
does screw word			-26
does scribe word			-41
does seal defect			-11
does seal material			-14
does seal surface			82
does seal word			-60
does see defect			-18
does see fixture			-34
does see part			-18
does see surface			48
does see verbish			19
does see word			38
does send defect			25
does send material			24
does send surface			-28
does set defect			-20
does set material			31
does set word			11
does shim defect			-15
does shim material			-8
does shim word			15
does sister material			141
does sister word			-50
does sit word			-26
does snug part			16
does snug word			28
does splice defect			-24
does splice material			23
does splice word			25
does swap area			-27
does swap defect			-27
does swap fixture			-44
does swap material			21
does swap part			66
does swap surface			-47
does swap verbish			-20
does swap word			41
does take area			-32
does take defect			-29
does take fixture			42
does take material			18
does take part			-11
does take surface			-47
does take word			73
does tape defect			-28
does tape material			21
does tape part			-60
does tape word			45
does tell verbish			78
does tell word			-23
does tighten defect			-29
does trim defect			-23
does trim material			27
does trim word			-18
does turn material			32
does turn part			11
does want defect			-39
does want finish			-11
does want fixture			-36
does want material			45
does want surface			15
does want word			-28
far after 1	-13	27
far after 13+	-18	-19
far after 2	-11
far after 3-4	-8
far after 5-7	-11	-8
far after 8-12	-16	-8
far before 0	25	21	-18
far before 1	20	19	-11
far before 13+	-25	-27
far before 2	23	25	-15
far before 3-4	23	11
far before 5-7	17
far before 8-12			9
figure-between	-9
flawed	15		49
frame copula +1	-16	-6
frame copula -2	-11
frame copula -3	-7	-14
frame copula -4	-17	-21
frame copula defect			-16
frame copula finish			-49
frame copula fixture			24
frame copula here-before	38	30	-10
frame copula material			23
frame copula part			30
frame copula size			-53
frame copula surface			25
frame copula tells			-42
frame copula tool			-22
frame copula verbish			22
frame copula word			-35
frame imperative +1	-33	13
frame imperative -1	18
frame imperative -2	-9	19	13
frame imperative -3	-14	-42	21
frame imperative -4	10	-40	-29
frame imperative area			27
frame imperative defect			-14
frame imperative finish			-31
frame imperative fixture			40
frame imperative here-after		10
frame imperative here-before	22	32	-21
frame imperative part			17
frame imperative size			12
frame imperative tells			-50
frame imperative tool			-29
frame imperative verbish			-24
frame imperative word			-12
frame modal +1	-28	17
frame modal -1	26	-38	-9
frame modal -2	19		26
frame modal -3	-39
frame modal -4	32	-23	-15
frame modal defect			-13
frame modal finish			-16
frame modal fixture			9
frame modal here-after	-25	25
frame modal here-before	-12		-16
frame modal material			-6
frame modal part			37
frame modal size			38
frame modal surface			17
frame modal tells			-39
frame modal verbish			-11
frame modal word			-17
frame none +1	-21	-26
frame none -1	15	11	31
frame none -3	-10	-14	-11
frame none -4	-26	-10	-10
frame none area			45
frame none defect			-23
frame none finish			29
frame none here-after		13
frame none here-before	40	28	-57
frame none size			7
frame none verbish			-15
frame none word			-8
frame owed +1	-31	-14
frame owed -1	12	-53	21
frame owed -2		-44	15
frame owed -3	-9	-12
frame owed -4	-22		-39
frame owed defect			-22
frame owed finish			-39
frame owed fixture			12
frame owed here-after	-22	46
frame owed here-before	51	57	-7
frame owed material			15
frame owed part			34
frame owed size			-7
frame owed tells			-45
frame owed tool			-9
frame owed verbish			8
frame owed word			-12
frame past +1	-19	-20
frame past -1			40
frame past -2	11	-10
frame past -3	-6	-7	-29
frame past -4	-27	-8	-37
frame past area			-18
frame past defect			-18
frame past finish			-14
frame past fixture			21
frame past here-after		22
frame past here-before	42	15
frame past material			27
frame past part			35
frame past size			-12
frame past surface			-10
frame past verbish			-27
frame past word			-12
frame past work			-18
frame present +1	-23	-19
frame present -1		11
frame present -2		-7
frame present -3	15
frame present -4	-14	-11	-6
frame present defect			-6
frame present fixture			41
frame present here-after	-16	-9
frame present here-before	33	29	12
frame present part			-11
frame present tells			10
frame present word			-14
heading	-12	9	-7
heading +1	-21	-11
heading -1	-20		-31
heading -2	-15	21
heading -3	14	34	-11
heading -4	-8	14	11
heading here-after		-35
heading here-before		8	-40
join	-14	-12	-10
join +1	-11		-9
join +1 defect			-8
join +1 finish			10
join +1 fixture			-18
join +1 size			12
join +1 tells	9		-13
join +1 tool			-15
join +1 word			-8
join +1 work			-12
join -1 area			9
join -1 defect	-9		-10
join -1 finish			-11
join -1 fixture	9		18
join -1 material	-8
join -1 part	9
join -1 tells	-8		-12
join -1 work	-6
join -2			-9
join -2 area			-9
join -2 material			-7
join -2 size	-11		-8
join -2 tool	-7		-7
join -2 work	-14		-6
join -3	-13		-14
join -3 defect	-8		-8
join -3 finish	-6		-8
join -3 fixture			-6
join -3 material	-7		-8
join -3 size	-10		-15
join -3 surface			-8
join -3 tells			-8
join -3 tool	7
join -3 verbish	-7		-8
join -3 work	-8		-16
join area	-7
join area+area		-7	-20
join area+finish		15	9
join area+fixture			-7
join area+material			6
join area+size			21
join area+surface		10	6
join area+tells		47	33
join area+tool		-8	-10
join area+verbish		-6
join defect	-11		-8
join defect+size	-9
join finish	-9		-12
join finish+area		7
join finish+finish			-14
join finish+fixture		7	-7
join finish+size	-11
join finish+surface			8
join finish+tells	-11
join finish+tool	-11
join fixture	8		8
join fixture+area		25	6
join fixture+defect		-10
join fixture+finish	-8	23	-12
join fixture+fixture	20	14	21
join fixture+size	18	17	11
join fixture+tells	35	25	13
join fixture+tool	7	-22	-16
join fixture+verbish		-10
join fixture+word			7
join fixture+work	-11		-14
join heading	-10
join leads about quantity across	-21
join leads along	-9	-14	-10
join leads around		18	16
join leads at quantity to	-8
join leads at term verb		-7
join leads at term word	7
join leads at verb word		14
join leads at word		12
join leads at word term		-7	-7
join leads at word verb		-11
join leads at word word	9	-12	8
join leads before		-7
join leads before word verb	19		45
join leads behind	19
join leads behind word word	16	13
join leads by		14	20
join leads by term	6
join leads by term quantity		16
join leads by term verb			6
join leads down word		-37
join leads for	-6	8
join leads for word		19
join leads for word term	-10	-15	-9
join leads from	-7
join leads in			7
join leads in term		10	-6
join leads in term of		-6
join leads in term term		14	28
join leads in verb behind		9
join leads in word	11		6
join leads in word word		-9	-10
join leads into	-11		-13
join leads mark			-9
join leads near		30
join leads next to		18
join leads number			18
join leads of quantity	-27
join leads of quantity word	-10
join leads of term		11
join leads of term word	-10	-7
join leads of word		-16
join leads of word verb		-18	-7
join leads off term word		17	27
join leads on quantity		11	9
join leads on term term	-9		11
join leads on term verb		14
join leads on term word	-7	6	11
join leads on verb verb	-13
join leads on word term		-12	-10
join leads on word word	-21	-9	-11
join leads out of		-9
join leads out on		-10
join leads over	6		6
join leads over to	9
join leads quantity at			-7
join leads quantity by quantity			9
join leads quantity from		-7
join leads quantity of		-23
join leads quantity of quantity			-10
join leads quantity of word		13	6
join leads quantity on		-9
join leads quantity term word		19	7
join leads quantity verb word	-11	-27
join leads quantity word		7
join leads quantity word quantity		8
join leads quantity word verb		43
join leads quantity word word		-11	-8
join leads term at	6
join leads term by	-17	-16
join leads term on		25
join leads term over	-10	-9
join leads term quantity at		-10
join leads term term term		-17
join leads term term verb		-9
join leads term term word		-10
join leads term verb			12
join leads term verb by		9
join leads term verb in		18
join leads term verb quantity		10
join leads term word	9	-9	-11
join leads term word verb		-14
join leads time		23
join leads to			-7
join leads to term word	8	-6
join leads to verb	10		-8
join leads to verb quantity		-29	-10
join leads under		13
join leads under term word	13
join leads under word word		-12	-7
join leads verb at			10
join leads verb at quantity		-7	-6
join leads verb behind	-7	6
join leads verb by		-8
join leads verb for	-7
join leads verb in	9	8	13
join leads verb off		19
join leads verb on		-12
join leads verb on word		7
join leads verb out quantity			-20
join leads verb quantity		-12
join leads verb quantity by	-7
join leads verb quantity of		-11
join leads verb quantity on		7	-14
join leads verb quantity term		44
join leads verb quantity to	-12
join leads verb quantity word	18	12
join leads verb term in		-9
join leads verb term on		-12
join leads verb term verb		15
join leads verb to			32
join leads verb under		42
join leads verb verb at		-6
join leads verb verb down	-9	-9
join leads verb verb in			38
join leads verb verb on	-7
join leads verb verb out			-11
join leads verb verb term		-17	9
join leads verb verb word		-9
join leads verb with		6	23
join leads verb word			-8
join leads verb word in			-7
join leads verb word quantity	8	10
join leads verb word term	-8	7
join leads verb word verb		-7
join leads verb word word		-9
join leads with quantity		-9
join leads with term word			7
join leads word		-6
join leads word at		-6	-22
join leads word in term		-6
join leads word in verb	-9
join leads word number word			-9
join leads word of	11	-8
join leads word on	9
join leads word on quantity			-7
join leads word quantity	-8		-13
join leads word quantity of		-11	18
join leads word quantity on		-19
join leads word quantity word	9	-7	-7
join leads word term	10
join leads word term at	9	12
join leads word term by	-9		-7
join leads word term of		-10
join leads word term quantity	-7	-6
join leads word term verb	-9	6
join leads word term word		-12	10
join leads word to	-10
join leads word to verb	11
join leads word verb			8
join leads word verb about		8
join leads word verb at		-11
join leads word verb from	-9		-14
join leads word verb in		-9	-11
join leads word verb quantity		-7	-10
join leads word verb term		-8
join leads word verb up		18	-8
join leads word verb word		-11	11
join leads word with			-8
join leads word word at			7
join leads word word quantity	-11	-12	-9
join leads word word term		-16
join leads word word to			18
join leads word word verb		-16
join links 	12	-8	-6
join links about quantity across	-18
join links above			7
join links along		-29	-27
join links around	22	18	21
join links at	11	14
join links at quantity	8		12
join links at quantity off	27
join links at quantity to	-32
join links at quantity word		-15
join links at term verb	34	-8	37
join links at term word	63		24
join links at verb word		21
join links at word	47	8	7
join links at word term		-16	-11
join links at word verb	20	-18
join links at word word	10	-11	40
join links before word verb	11		17
join links behind	12	-7	63
join links behind term word	6	-6
join links behind word number		-7
join links behind word word	22	11
join links by		20	39
join links by term			13
join links by term quantity		7
join links by term verb	13		20
join links by term word	72	7	10
join links down	12
join links down word		-12
join links for	-8	15	-8
join links for quantity	-16
join links for word		15
join links for word term	-6	-16	-12
join links from		10
join links in	14	13	22
join links in about quantity	-21
join links in term		25	44
join links in term term		14	74
join links in term verb	31		25
join links in term word	23		-9
join links in verb behind		11
join links in word	27		9
join links in word term	11
join links in word verb		-12
join links in word word		-20	-14
join links into			-13
join links mark	14		-15
join links near	11	36	36
join links next to		54
join links number		-10
join links of	28	30	26
join links of quantity	-19		34
join links of quantity word	-15
join links of term	8
join links of term verb	-31	9	36
join links of term word	-26	-13	-23
join links of verb word		-9
join links of word verb		-16	-11
join links of word word		-19
join links off			9
join links off term word			18
join links on	6	10	26
join links on quantity		12	33
join links on term	-31	-10	-12
join links on term term		-8	42
join links on term verb	21	25	-14
join links on term word	-29	16	33
join links on verb verb	-25
join links on word		-10	-12
join links on word quantity			-19
join links on word term		-12	-26
join links on word verb			10
join links on word word	-26		-21
join links out of		-12
join links out of word		-8
join links out on		-10
join links over		11
join links over term verb		7
join links over term word		-9	45
join links over to	6	-7
join links quantity			9
join links quantity at	29	-19	-22
join links quantity by quantity	-13	-26	-38
join links quantity from	-41	-29	-7
join links quantity from term	-19	-14
join links quantity in	-12		-6
join links quantity mark		-10
join links quantity of	6	-13
join links quantity of quantity			-12
join links quantity of term	19
join links quantity of word		12	6
join links quantity on	28	-16
join links quantity on word	22
join links quantity over	21
join links quantity term to	-13
join links quantity term word	-13	22	12
join links quantity to	-10	-18
join links quantity toward		-8
join links quantity verb quantity	19	8
join links quantity verb word	-51	-14
join links quantity word at	-23	-6
join links quantity word quantity	-14
join links quantity word to	-18
join links quantity word verb		9
join links quantity word word	-17	-10	-12
join links term at	28	-8	16
join links term by	-10	-21	-8
join links term in		23	25
join links term on		8	-9
join links term over	-22	-10
join links term quantity at	-29
join links term term	-11	-7
join links term term term		-9
join links term term verb	-8
join links term term word		-14
join links term verb	-9
join links term verb in		7
join links term verb quantity		9	7
join links term word	18	-14	-30
join links term word in		33
join links term word verb		-8	-8
join links term word word			-15
join links through	12
join links time		7
join links to		8
join links to term word	25	-14
join links to verb			-9
join links to verb quantity		-17	-7
join links under	-7	36	45
join links under term word	57
join links under word word	17	-17	-26
join links up in		-9	-8
join links verb	13	-6
join links verb along	-31
join links verb at			61
join links verb at quantity	12	-17	-12
join links verb behind	-14	-24	-55
join links verb by		-24	60
join links verb by quantity		-9
join links verb for	-20
join links verb from		-11
join links verb in		-10
join links verb mark		24
join links verb of	-9	18	-10
join links verb off		8
join links verb on	12
join links verb on word		-9	-7
join links verb out	27
join links verb out quantity	-28	-25	-41
join links verb quantity	20	-11
join links verb quantity at		-9
join links verb quantity by	-7
join links verb quantity from	74	-16
join links verb quantity in	9	-6
join links verb quantity off	48
join links verb quantity on	11	19	-39
join links verb quantity term		9	-6
join links verb quantity to	-17
join links verb quantity up	-15
join links verb quantity verb	20	-7
join links verb quantity word	16	12
join links verb term	27
join links verb term at		-16
join links verb term from		-8
join links verb term in		-15	-20
join links verb term on		-8
join links verb term to		-9
join links verb term word	-11	-20	-12
join links verb time			-7
join links verb to			18
join links verb under		10
join links verb up word			33
join links verb verb	-7		10
join links verb verb at		-17
join links verb verb by	12	-8
join links verb verb down	-40	-31
join links verb verb in	20	25	35
join links verb verb on	-40	-9
join links verb verb out	-26	-8	-20
join links verb verb quantity			-17
join links verb verb term		-14
join links verb verb verb	8		20
join links verb verb with	-6	-10	-8
join links verb verb word	25
join links verb with		-11	27
join links verb word	-15	-10	-13
join links verb word in		-19	-35
join links verb word on		-7	24
join links verb word quantity	31	28	19
join links verb word term	23	-11
join links verb word verb	-39	-19
join links verb word word	-28	-14
join links with	13	-7	6
join links with quantity	26	-13
join links with term word			22
join links word		-8
join links word at		-8	-7
join links word at quantity	15
join links word down		-6
join links word in			-14
join links word in at		-27
join links word in verb	-26
join links word number word			-17
join links word on	6	7	-8
join links word on quantity			-16
join links word quantity	-8	-6	-10
join links word quantity at	22
join links word quantity from	18
join links word quantity of		-15	15
join links word quantity off	-37
join links word quantity on		-15
join links word quantity term	-31	-8	17
join links word quantity verb	15
join links word quantity word		-17	-7
join links word term	30		-13
join links word term at	20	31
join links word term by	-17	-15	-27
join links word term in		-11
join links word term of		-12
join links word term on		-8
join links word term quantity	-22
join links word term term		-8
join links word term verb	-22		-13
join links word term word	9	-17	21
join links word to	-34
join links word to verb	33	9
join links word verb			13
join links word verb about	-18	8
join links word verb at		-23	13
join links word verb down		-6
join links word verb from	-7	22	-27
join links word verb in	9	-14	-35
join links word verb on	16	8	23
join links word verb over	-13
join links word verb quantity	42		-20
join links word verb to	17	-15
join links word verb up	-9	23	8
join links word verb verb		-6
join links word verb word	-15		-10
join links word with			-13
join links word word		-8	17
join links word word at			12
join links word word by	9
join links word word in			-16
join links word word mark	-12
join links word word quantity	-39	-16	-7
join links word word term	-27	-14
join links word word to		-9	10
join links word word verb	10	-18
join links word word word		12	11
join material		-9	8
join material+defect		-8
join material+finish		-6
join material+fixture		17	17
join material+material			10
join material+part		-7	9
join material+size		-17	-8
join material+surface			6
join material+tells		-13	-13
join material+tool		-10
join material+verbish		-12	-10
join material+word		-9
join material+work			-7
join part			-9
join part+area		-10	-10
join part+defect		-7	-11
join part+finish		-16
join part+fixture		13	18
join part+material		-7
join part+part	8
join part+size	16	14
join part+tells	-8	-27	-16
join part+tool	8
join part+verbish			8
join part+word			-7
join part+work			-12
join same-after	17	-7	16
join same-after area		9	7
join same-after defect	18	-11
join same-after finish	-7
join same-after fixture	7	14	36
join same-after material	14		10
join same-after part	10		9
join same-after size	19
join same-after surface	19		7
join same-after tells			33
join same-after tool		-10
join same-after word	-8	-11
join same-before finish			-10
join same-before size	10
join same-before tells	-13		-7
join same-before verbish		-6
join same-before work		-7
join size		-7
join size 1			7
join size 2	-13	-12	-23
join size 3			-11
join size+defect	-10		-7
join size+finish	-14		-16
join size+fixture	16
join size+material		-11
join size+part			7
join size+size			32
join size+surface	7		-9
join size+tells		11
join size+tool	-7		8
join size+verbish	9	-11
join size+word	-7
join sizes 1+1			16
join sizes 1+2	-10	-11	-9
join sizes 2+1		-13	-20
join sizes 2+2	-10
join sizes 2+3	-13		-14
join sizes 3+1		-7
join sizes 3+2	-8	7
join sizes 3+3	-9		-20
join surface			9
join surface+area		11	24
join surface+defect	8	-11
join surface+finish			28
join surface+part		14
join surface+size	-6
join surface+surface		13
join surface+tells		-8
join surface+verbish		9
join surface+work		-10	-9
join tells		-7	-14
join tells+finish	-15
join tells+fixture	18	12	10
join tells+part	-9	-13	-11
join tells+size			7
join tells+surface			-8
join tells+tells			-22
join tells+word		-7
join tool	-9	-8
join tool+area		-9
join tool+defect	-7	-7	-8
join tool+finish	-10		22
join tool+fixture		-20	-10
join tool+material			8
join tool+size			8
join tool+surface	-7
join tool+tool			-9
join verbish	-12	-7	-17
join verbish+area			13
join verbish+finish	-8	-7	-10
join verbish+material		-9	-6
join verbish+size	-10	-8
join verbish+surface		8
join verbish+tells		-12
join verbish+tool	-6		-11
join verbish+verbish		-9	-14
join verbish+word			-12
join word	-6		-12
join word+finish			-7
join word+surface	6
join word+tells	-11	-7
join word+work		-6
join work	-6		-21
join work+fixture	-11		-8
join work+surface	12
join work+word		-8
kind +1 area	-15	-17
kind +1 defect	-10	-9
kind +1 finish	-10	-17
kind +1 fixture	-16
kind +1 material	-15	-8
kind +1 part	-22
kind +1 size	-11
kind +1 surface	-16	-10
kind +1 tells	-10	-17
kind +1 tool	-7	-19
kind +1 verbish	-9	-23
kind +1 word	-13	-10
kind -1 area	-23	12
kind -1 defect	-25	-31	-21
kind -1 finish	-30	-16	-28
kind -1 fixture	25	38	36
kind -1 material	35		16
kind -1 part	18	9	67
kind -1 size	13		24
kind -1 surface		9
kind -1 tells	-12	-54
kind -1 tool	-12	-8	21
kind -1 verbish	-10	-9
kind -1 word	-11	-9
kind -1 work	14
kind -2 area	-27		8
kind -2 defect	-14	-18	-10
kind -2 finish	-37	-39	-15
kind -2 fixture	39	17	43
kind -2 material	8	-11	18
kind -2 part		8
kind -2 size	14
kind -2 surface		22
kind -2 tells	-24	15	-53
kind -2 tool	-18	-43	-53
kind -2 verbish	-9	-13
kind -2 word	-6	-8
kind -2 work	-29	-19	-25
kind -3 area	11		8
kind -3 defect	-16	-10	-13
kind -3 finish	-11	-14	-21
kind -3 fixture		30	10
kind -3 material		-13
kind -3 part	17		22
kind -3 size	-45	-27	-63
kind -3 surface	-16	-10	26
kind -3 tells	-14	-12	-18
kind -3 tool	-24	18	-20
kind -3 verbish	-10	-20	-8
kind -3 word	-8	-15	-21
kind -3 work	37	-9
kind -4 area		-6
kind -4 defect	-11		-12
kind -4 finish	12	9	-9
kind -4 fixture	-9		-16
kind -4 material	-19
kind -4 part	-7	-14	-23
kind -4 size	-6	-16
kind -4 surface	-13	-9
kind -4 tells	-10		-28
kind -4 tool		-16	-26
kind -4 verbish	-10		-10
kind -4 word		-12	-12
kind -4 work	-11	-10	-17
kind area	-9
kind defect	-16	-23	-18
kind finish	-13	-12	-21
kind fixture	13	26	21
kind here-after area	-8	51
kind here-after defect	-8	-22
kind here-after finish	16
kind here-after fixture	-22	12
kind here-after material		28
kind here-after part		32
kind here-after size		27
kind here-after surface		22
kind here-after tells	-7	-44
kind here-after tool		7
kind here-after verbish	-14	28
kind here-after word	-8
kind here-before area	-20	-27	-48
kind here-before defect	10	40	12
kind here-before finish			-12
kind here-before fixture	31	32	35
kind here-before material	38	46
kind here-before part	66	43	18
kind here-before size	34	7	-15
kind here-before surface	35		-13
kind here-before tells	-24	-7	-23
kind here-before tool	-41	30	23
kind here-before verbish	29	-17	-37
kind here-before word		-11	-25
kind material	11	10	14
kind part	18	21	21
kind size	10
kind surface			7
kind tells	-16	-17	-27
kind tool	-14	-7	-11
kind verbish		-7	-9
kind word	-13	-17	-14
kind work	8	-22	-36
lead a -2	47	-30
lead a -3	-37	-11
lead a -4	-35	-8
lead a here-after	37	19
lead a here-before	-30	40
lead about -3	-20
lead about -4	-17
lead about here-after	9
lead about here-before	45
lead area -1		-35
lead area -2		34
lead area -3		-16
lead area -4		-15
lead area here-after		-14
lead area here-before		37
lead at -1	-21
lead at -2	-10
lead at -3	-10
lead at -4	-11
lead at here-after	-12
lead at here-before	65
lead by -1	-13
lead by -3	-9
lead by -4	9
lead by here-before	29
lead defect -1	-14
lead defect -2	-11
lead defect -3	-18
lead defect -4	-14
lead defect here-before	42
lead down -2	-12
lead down here-after	-22
lead down here-before	49
lead every -1	-77
lead every -2	-52
lead every here-before	70
lead fixture -1	-38
lead fixture -2	-10	6
lead fixture -3	-20
lead fixture -4	-7
lead fixture here-after	-11	-15
lead fixture here-before	58	15
lead for -1	18
lead for -2	-34
lead for -3	-16
lead for -4	-11
lead for here-before	42
lead in -1	-11
lead in -2	15
lead in -3	27
lead in -4	-28
lead in here-before	17
lead mark -1	24
lead mark -2	-16
lead mark -3	-26
lead mark -4	-13
lead mark here-after	-8
lead mark here-before	35
lead material -1	16	12
lead material -2	-31	-9
lead material -4	-16	-23
lead material here-after		-15
lead material here-before	15	17
lead number -1		15
lead number -2		51
lead number -3		-22
lead number -4		-52
lead number here-after		-21
lead number here-before		50
lead of -1	18
lead of -2	-28
lead of -3	-28
lead of -4	8
lead of here-after	-16
lead of here-before	38
lead off here-after	-8
lead off here-before	39
lead out -1	23
lead out -2	-56
lead out -3	34
lead out -4	-35
lead out here-after	-7
lead out here-before	55
lead over -1	-15
lead over -3	68
lead over -4	-18
lead over here-before	-18
lead part -1	-36	-7
lead part -2	-13	-11
lead part -3	-29	-8
lead part -4	11	-7
lead part here-after		-16
lead part here-before	51	31
lead past -2	28
lead quantity -1		28
lead quantity -2		6
lead quantity -3	-7	-30
lead quantity -4	-15	-16
lead quantity here-after		-10
lead quantity here-before	35	58
lead role -1		-83
lead role -2		-47
lead role -3		-23
lead role -4		46
lead role here-after		132
lead size -1	-26	-32
lead size -2		-35
lead size -3	17	-18
lead size -4	-9
lead size here-after	-10	34
lead size here-before	36	29
lead surface -1	-8	18
lead surface -2	15
lead surface -3	-30	8
lead surface -4	-16	-21
lead surface here-after	-10	-27
lead surface here-before	34	16
lead tells -1		-6
lead tells -2		-30
lead tells -3		35
lead tells -4		-29
lead tells here-after		-36
lead tells here-before		-7
lead that -1		-36
lead that -3		-30
lead that -4		23
lead that here-after		36
lead that here-before		24
lead the -1		-14
lead the -2		-29
lead the -3		-29
lead the -4		-45
lead the here-after		64
lead the here-before		-13
lead to -1	35	22
lead to -2	11	33
lead to -3	-33
lead to here-after	-7	28
lead to here-before	12	-15
lead tool -1		-25
lead tool -3		-14
lead tool -4		24
lead tool here-after		-11
lead tool here-before		26
lead up -1	36
lead up -2	-27
lead up -4	-26
lead up here-after	17
lead up here-before	11
lead verbish -1	11	7
lead verbish -3		-6
lead verbish -4	-22	-13
lead verbish here-after	-9	-22
lead verbish here-before	39	32
lead with -1	-40	-10
lead with -2		-12
lead with -3		23
lead with -4		-29
lead with here-after		-18
lead with here-before		40
lead word -1		12
lead word -3	-9	-12
lead word -4	-16	-12
lead word here-after	-8	8
lead word here-before	30	25
lemma be object	-13	-17
lemma be subject	33	24
lemma bend subject		36
lemma buzz subject		31
lemma call subject	26
lemma crack object		9
lemma crack subject		39
lemma cut object	18
lemma drill object	-48
lemma drill subject	44
lemma drip object		-29
lemma drip subject		41
lemma dump object		-14
lemma dump subject		27
lemma find object		111
lemma finish object	13
lemma get object		-15
lemma get subject		71
lemma go object	14	7
lemma go subject	10	-22
lemma hang object	11	-38
lemma hang subject	21	-70
lemma have object	6	-9
lemma have subject	37	11
lemma have subject-late	-47
lemma hit object		-64
lemma hit subject		74
lemma hold object	38
lemma hold subject	69
lemma hum subject		42
lemma keep object		-9
lemma land object		-21
lemma land subject		-29
lemma leak object		-8
lemma leak subject		33
lemma leave object	72	30
lemma leave subject		14
lemma make object		27
lemma measure object	-32
lemma measure subject	43
lemma measure subject-late	-9
lemma miss object		60
lemma move object	-23	25
lemma need object	-20	64
lemma need subject	26
lemma pull object	32	41
lemma pull subject		8
lemma put object	-8	-45
lemma read object	-36
lemma read subject	-11	28
lemma rip subject	70
lemma run object	-20	-17
lemma run subject	-44	50
lemma say object		127
lemma say subject		-29
lemma see object		45
lemma send object		-53
lemma show subject		-21
lemma sit object	28	-44
lemma sit subject	43	12
lemma stick object		-33
lemma stick subject	48	74
lemma strip subject		48
lemma take object	-26	32
lemma think object		-78
lemma trip object		-16
lemma turn subject		-28
lemma use object		83
lemma want object	34	39
lemma want subject	-17
lemma weep subject		41
lemma wobble subject		44
not-carried	-38
not-carried +1 none	-14
not-carried +1 own	-11
not-carried +1 person	-23
not-carried +1 pointer	-22
not-carried +1 tells	-17
not-carried -1 own	-20
not-carried -1 person	-53
not-carried -1 pointer	-15
not-carried -1 tells	-23
not-carried -2 none	-36
not-carried -2 own	-14
not-carried -2 person	-37
not-carried -2 pointer	-46
not-carried -2 tells	-46
not-carried -3 none	-17
not-carried -3 own	-6
not-carried -3 person	-21
not-carried -3 pointer	-14
not-carried -3 tells	-32
not-carried -4 none	-15
not-carried -4 own	-15
not-carried -4 person	16
not-carried -4 pointer	-31
not-carried -4 tells	-10
not-carried here-after own	-7
not-carried here-before none	39
not-carried here-before own	30
not-carried here-before person	7
not-carried here-before pointer	20
not-carried here-before tells	-39
not-told		-16
not-told +1		-17
not-told -1		28
not-told -4		-10
not-told here-after		-20
not-told here-before		18
number many many			75
number many one			-64
number none many			14
number none one			-7
opens-with +1	-42
opens-with -1	52	-16
opens-with -2		-13
opens-with -3	-9	-20
opens-with -4	-34	-25
opens-with here-after		41
part +1 bare	-13
part +1 object	-14	-16
part +1 opens	-22	-10
part +1 subject	-15
part +1 subject-late	-10	-35
part -1 bare	-23	-13	-22
part -1 object	-12
part -1 opens	22	15	21
part -1 subject	27	12	34
part -1 subject-late		-7	28
part -2 bare	-14	-7	-13
part -2 object	-10	-9
part -2 opens			18
part -2 subject	11		26
part -2 subject-late		22	13
part -3 bare	-18		-8
part -3 object	-13	-18	-12
part -3 opens	17	9	15
part -3 subject		-7
part -3 subject-late	7	-17	6
part -4 bare	-11	-8
part -4 object	-15	-20	-14
part -4 subject	-16		-16
part -4 subject-late			-33
part bare	-19	-14	-14
part bare area	-11
part bare defect	-17	-16	-29
part bare finish	-22	-7	6
part bare fixture		7	-17
part bare material		11	-13
part bare part	-8	-6	18
part bare size	-23	-7	21
part bare surface	-22	-20	-17
part bare tells		-7
part bare tool	37	-30	10
part bare verbish		-8	13
part bare word	-16	-17	-15
part bare work	-9
part here-after bare		-16
part here-after object	-7
part here-after opens		59
part here-after subject		66
part here-after subject-late	-17
part here-before bare			-42
part here-before object	18	16	-9
part here-before opens	47	30	-45
part here-before subject	40	27	11
part here-before subject-late		10	-49
part object	-23	-23	-16
part object area	-18
part object defect	-14	-22	-16
part object finish	-13	-23	-33
part object fixture	-7	21	21
part object part	9	18	23
part object size	11		17
part object tells	-27	-24	-23
part object tool	-16	-24	-11
part object verbish	-12	-10	-15
part object word	-16	-18	-17
part object work		-15	-11
part opens	20	20	16
part opens area	16	9	40
part opens defect	16	-22	14
part opens finish	-14	-11	-33
part opens fixture	27	38	61
part opens material	27	18	18
part opens part	24	14	19
part opens size		8	-32
part opens surface		33	29
part opens tells	15	36	-25
part opens tool	-7	8
part opens verbish	16		-8
part opens word		7	-13
part opens work	15	9	-30
part subject	20	19	17
part subject area	-18	28	-12
part subject defect	-18	-38	-37
part subject finish	25	43	38
part subject fixture	26	23	22
part subject material	10	17	30
part subject part	14	25	13
part subject size	24		-29
part subject surface	22		17
part subject tells	-12	-33	-35
part subject tool	-29	76	-39
part subject verbish			-25
part subject word			11
part subject work	7	-31	-20
part subject-late area	-16	-25	-28
part subject-late defect	-26	11
part subject-late finish	-12	25	34
part subject-late fixture	14	7	-12
part subject-late material	25	21	34
part subject-late part	14	-26	20
part subject-late size	27	15
part subject-late surface	-13	34
part subject-late tells			-13
part subject-late tool	-33	-28	14
part subject-late verbish		14	47
part subject-late word		-9	-23
points both -2			-76
points both -3			15
points both object			-32
points both subject			-8
points em -2			17
points em -3			8
points em -4			-45
points em bare			-46
points em here-before			31
points em object			12
points em opens			-7
points em subject-late			6
points it -2			14
points it -4			-9
points it bare			-28
points it here-before			-13
points it object			-22
points it opens			11
points it subject			30
points none -1			22
points none -3			-12
points none -4			-18
points none bare			-10
points none object			-24
points none opens			17
points none subject			18
points one -1			42
points one -2			-17
points one -3			-17
points one -4			-13
points one bare			30
points one here-before			-17
points one object			-11
points one opens			-12
points one subject-late			17
points that -1			34
points that -2			16
points that -3			14
points that -4			-54
points that bare			-40
points that here-before			-24
points that opens			26
points that subject			11
points that subject-late			-25
points them -1			67
points them -2			6
points them -4			-82
points them bare			-32
points them here-before			-19
points them object			41
points them opens			7
points them subject			-22
points them subject-late			-23
points they -1			8
points they -3			-36
points they -4			23
points they bare			28
points they here-before			-7
points they object			-54
points they opens			58
points they subject			-13
points they subject-late			52
points this -1			-14
points this -2			33
points this object			-11
points this opens			22
points this subject			-11
points those -1			-10
points those -2			23
points those -3			43
points those -4			-49
points those bare			28
points those here-before			-19
points those opens			27
points those subject			-21
points those subject-late			-16
prep about		-16	-41
prep above	-22		-27
prep across	-19	-40	-27
prep after	-34	-52	-26
prep along	-42	8	-21
prep around	-18	15	16
prep at	-28	-23	-28
prep before	-8	-12	-7
prep behind	-18	-31	-29
prep below	27	-23	-22
prep between	7	54	-24
prep by	-36	-35	-60
prep down	-9	35	9
prep for	-32		-19
prep from	-30	-34	-46
prep here-after about		-10
prep here-after above		-8
prep here-after along		14
prep here-after at		-20
prep here-after before	-19
prep here-after behind	19	-34
prep here-after below		-75
prep here-after by	-19	-25
prep here-after down		44
prep here-after for	-19
prep here-after from	-9	-43
prep here-after in	-8	10
prep here-after into		-34
prep here-after near		-35
prep here-after of	9
prep here-after off		34
prep here-after on	-6	23
prep here-after out		-11
prep here-after over	-10	-6
prep here-after past		-22
prep here-after through		85
prep here-after to	-14	-41
prep here-after toward	-17	-66
prep here-after under		-33
prep here-after up		72
prep here-after with		-57
prep here-after without		-51
prep here-before at	-74	-33	15
prep here-before behind	-26	-62
prep here-before by	-83	-101	-41
prep here-before for	-48	-9
prep here-before from	-110
prep here-before in	-22	-13
prep here-before of	-8		-39
prep here-before off	-54	-35
prep here-before on	-21	-29	33
prep here-before over	-25	-33
prep here-before to	-43	-53	-11
prep here-before under	-50	-51
prep here-before up		-22
prep here-before with	10	-20
prep in	-14	-10	-23
prep inside	-16	42
prep into	-17	-27	-19
prep near	-54	-45	-67
prep of	-11	-7	-17
prep off	-18		12
prep on	-15	-7	-6
prep other about		-13	-37
prep other above	-44		-20
prep other across	-8	-37	-27
prep other after	-36	-18	-26
prep other along	-35	19	-21
prep other around	-39	-13	16
prep other at	-25	-20	-29
prep other before		-21	-7
prep other behind	-23	-8	-29
prep other below	42	-15	-22
prep other between	-8	-6	-24
prep other by	-25	-21	-58
prep other down	-13	12	9
prep other for	-28	-6	-17
prep other from	-20	-27	-55
prep other in	-15	-16	-24
prep other into			-16
prep other near		-14	-67
prep other of	-14	-12	-14
prep other off	-17	-8	14
prep other on	-12	-13	-9
prep other out	-15	-28	-10
prep other over	-21	6	-18
prep other through	-6	-28	34
prep other to	-23	-28	-38
prep other toward	-15	-41	-44
prep other under	-30	-22	-51
prep other up	42		15
prep other with	-15	-16	-24
prep other without			-31
prep out	-38
prep over	-22		-38
prep past	-12
prep through	-43	39	34
prep to	-25	-34	-37
prep toward	-40	-69	-44
prep under	-36	-40	-52
prep up	30	21	15
prep with	-14	-24	-24
prep without	-7	-43	-31
rank after 0	-9
rank after 1	-8
rank after 2	-13	-10
rank after 3	-12	-12
rank after 4	-16
rank before 0	15	18	-11
rank before 1	18	9
rank before 2		-9
rank before 3	-12	-9	7
rank before 4	-18	-18
says copula	10		7
says imperative		9
says modal	-8		-25
says none		7
says owed		-10	10
says past	-9
says present	-8		-14
sentences -1	-39	-46	-55
sentences -1 bare	-23	-28	-37
sentences -1 object	-23	-24	-29
sentences -1 opens	-24	-32	-46
sentences -1 subject	-12	-22
sentences -1 subject-late	-23	-6	-35
sentences -2	-29	-29	-55
sentences -2 bare	-11	-15	-18
sentences -2 object	-8	-21	-29
sentences -2 opens	-21	-17	-25
sentences -2 subject	-25	-11	-49
sentences 1	-20	-36
sentences 1 bare	-12	-31
sentences 1 object	-6	-21
sentences 1 opens	-21	-38
sentences 1 subject	-18	-29
sentences 1 subject-late	-16	-22
size 1	-15	-33	-37
size 2	15	27	42
size 3	13	46	38
stands-off-after	-9	9
subject none +1	-19	-20
subject none -1	10
subject none -2		-10
subject none -3	-6	-9
subject none -4	-22	-12
subject none here-after		17
subject none here-before	40	34
subject own +1	-13	-11
subject own -1	-22
subject own -2	-13
subject own -3		-7
subject own -4	-14	-17
subject own here-after		-13
subject own here-before	42	29
subject person +1	-28
subject person -1	29	-36
subject person -2	-42	-15
subject person -3	-38
subject person -4	53	12
subject person here-after	-12	8
subject pointer +1	-32	-18
subject pointer -1	29	7
subject pointer -2	10
subject pointer -3	-9	-21
subject pointer -4	-22	-22
subject pointer here-after	-14	37
subject pointer here-before	31	-13
subject tells +1	-18	25
subject tells -1	39	-55
subject tells -2	30	-43
subject tells -3		39
subject tells -4	-13	-20
subject tells here-after		13
subject tells here-before	-32	13
told -1		80
told -2		29
told -3		9
told -4		22
told defect		-35
told finish		38
told fixture		18
told here-after		7
told here-before		14
told material		26
told part		29
told size		-41
told surface		22
told tells		32
told tool		11
told verbish		11
touches-before	25	19
unit area area	-26
unit area defect	-16
unit area fixture	-36
unit area material	77
unit area part	-26
unit area surface	19
unit area word	-21
unit current defect	-23
unit current part	57
unit current surface	-40
unit current verbish	15
unit current word	-25
unit flow part	42
unit flow word	-13
unit length area	-10
unit length defect	-11
unit length finish	-19
unit length fixture	12
unit length material	11
unit length part	12
unit length size	20
unit length tells	-9
unit length tool	-22
unit length word	-13
unit length work	-22
unit none defect	-19	-23
unit none finish		-12
unit none fixture	27	25
unit none material	19	9
unit none part	22	22
unit none size	-14
unit none tells	-19	-17
unit none tool	-20
unit none verbish	-16	-7
unit none word	-12	-16
unit none work	43	-22
unit other defect	-30
unit other material	14
unit other part	-38
unit other surface	-14
unit other word	50
unit percent area	-15
unit percent defect	-39
unit percent finish	8
unit percent material	14
unit percent part	-30
unit percent size	13
unit percent surface	59
unit percent tells	-47
unit percent tool	32
unit percent word	-14
unit pressure defect	-15
unit pressure material	-6
unit pressure part	-49
unit pressure size	35
unit pressure surface	27
unit pressure verbish	-11
unit slope material	-32
unit slope surface	21
unit slope word	30
unit temperature fixture	-21
unit temperature material	-14
unit temperature size	10
unit temperature word	12
unit voltage defect	-21
unit voltage material	-36
unit voltage part	50
unit volume material	-35
unit volume part	60
unit volume word	-38
use buy	-11	13
use have	7	-13	8
use measure		-13	14
use move	-10		-22
use need	-6	-17
use return		18
use say			-36
use see	18	-17
use use			-27
use work	-7		-6
where +1	-19	-14
where -1	7		15
where -2			10
where -3	-7	-12	-6
where -4	-19	-16	-20
where here-after	-7	8
where here-before	38	27	-13
whole after about defect		-8
whole after at area		-23
whole after at defect		20
whole after at fixture	7
whole after at material		-33
whole after at part	74	58
whole after at surface		-17
whole after at verbish	13	-20
whole after at word	54	-9
whole after behind defect		-15
whole after behind fixture		-24
whole after behind word		-23
whole after below material	49
whole after by defect		-16
whole after by fixture	-11	-22
whole after by part		-7
whole after by word	-31	8
whole after centers size	33
whole after down word	-11
whole after end defect		-15
whole after for defect		-11
whole after from defect		-7
whole after from fixture	33
whole after from part		-13
whole after from surface	-17	-14
whole after from word	-35	59
whole after in area		-16
whole after in defect		-11
whole after in fixture		-13
whole after in material		12
whole after in part		7
whole after in surface	-41	-10
whole after in tool		-7
whole after in verbish		-17
whole after in word	-15	-24
whole after of defect		-14
whole after of material	67
whole after of word	26
whole after off surface	18
whole after off word	19
whole after on defect		-14
whole after on material		13
whole after on size	-29
whole after on surface	65	-27
whole after on word		-26
whole after out material		-6
whole after out surface		-17
whole after over size	-28
whole after quantity area		16
whole after quantity defect		-11
whole after quantity fixture		-9
whole after quantity material		-27
whole after quantity size		-8
whole after quantity surface		22
whole after quantity tells		-18
whole after quantity verbish		-17
whole after quantity word		-20
whole after term area	-9	33
whole after term defect		-20
whole after term finish	-15	-15
whole after term fixture	44	60
whole after term part		-23
whole after term size	60	-20
whole after term surface		-22
whole after term verbish	9
whole after term word	10	-16
whole after through defect		-6
whole after to defect		-8
whole after to part	-24
whole after to surface	26
whole after to word	-35
whole after up defect		-11
whole after up word	-27
whole after with defect		-16
whole after word area	-29
whole after word defect	-52	-16
whole after word finish		-9
whole after word fixture	-46
whole after word material	-14
whole after word part	-49
whole after word size	53	-7
whole after word surface	11
whole after word tells	-16
whole after word tool		-30
whole after word word	8	-10
whole article a		-12	14
whole article none	-15	-10	-23
whole article other	-8		-9
whole article the			13
whole behind about -1		22
whole behind about -2		-18
whole behind about here-after		-12
whole behind about here-before		-7
whole behind above +1	-13
whole behind above -1	9
whole behind above -2	-18
whole behind above here-after	-22
whole behind above here-before	19
whole behind across +1	-28
whole behind across -1	20
whole behind across -2	-35
whole behind across -4	-21
whole behind across here-after	-43
whole behind across here-before	83
whole behind after +1	-10
whole behind after -1	-31
whole behind after -2	-21
whole behind at +1	-12
whole behind at -1	-38	10
whole behind at -2	-7	-13
whole behind at -3	-19	-8
whole behind at -4	-15
whole behind at here-after	64	6
whole behind at here-before		30
whole behind before here-after	-30
whole behind behind here-after		39
whole behind behind here-before		-14
whole behind below +1	-13
whole behind below -1	10
whole behind below here-after	48
whole behind below here-before	-7
whole behind by +1	-19	18
whole behind by -1	10	-35
whole behind by -2	32	-28
whole behind by -3	-27
whole behind by -4	21	-10
whole behind by here-after	-14	-27
whole behind by here-before	10	-22
whole behind centers -1	-19
whole behind centers here-after	27
whole behind deep +1	-17
whole behind deep -1	-10
whole behind deep -2	-21
whole behind deep -3	-30
whole behind deep -4	-25
whole behind deep here-after	-47
whole behind down +1	-13	-14
whole behind down -1	67	-25
whole behind down here-after		8
whole behind down here-before	17	17
whole behind end +1	-20	-8
whole behind end -1	7	-7
whole behind end -2	-7	-15
whole behind end -3	-16
whole behind end -4	-16	-12
whole behind end here-after		-15
whole behind end here-before	20	20
whole behind for +1	-12
whole behind for -1	43
whole behind for -2	-27
whole behind for -3	-14
whole behind for -4	-12
whole behind for here-after	-59	-43
whole behind for here-before		43
whole behind from +1	-14	-14
whole behind from -1	23	-17
whole behind from -2	-7
whole behind from -3	-11
whole behind from -4	-10	32
whole behind from here-after		24
whole behind from here-before	27	8
whole behind high +1	-18
whole behind high -1	15
whole behind high -2	6
whole behind high -3	-23
whole behind high -4	-25
whole behind high here-before	18
whole behind in +1	-18	-7
whole behind in -1	22	7
whole behind in -2	28	-12
whole behind in -3	-31	-8
whole behind in -4	-16	-10
whole behind in here-after	-25	-26
whole behind in here-before	32
whole behind into here-after		-34
whole behind long +1	-16
whole behind long -1	25
whole behind long -2	-15
whole behind long -4	-24
whole behind long here-after	-23
whole behind long here-before	61
whole behind low +1	-14
whole behind low -1	-49
whole behind low -2	-26
whole behind low -4	38
whole behind low here-before	-51
whole behind mark -1	25
whole behind mark here-after	-43	31
whole behind mark here-before		17
whole behind number here-after		22
whole behind of +1	-16
whole behind of -1	-29
whole behind of -2	-31
whole behind of -3	-18
whole behind of here-after	84
whole behind of here-before	-21
whole behind off +1	-13	-7
whole behind off -1	-11	-24
whole behind off -2	12
whole behind off -3	16
whole behind off -4	-11
whole behind off here-after	21	10
whole behind off here-before		-13
whole behind on +1		-11
whole behind on -1	-36	-16
whole behind on -2	-33	9
whole behind on -3	24	-18
whole behind on -4	10
whole behind on here-after		-12
whole behind on here-before	-29	-32
whole behind out -1	-21	-41
whole behind out here-after		-34
whole behind out here-before		-9
whole behind over +1	-20
whole behind over -1	26
whole behind over -2	-38
whole behind over -3	-13
whole behind over -4	-15
whole behind over here-after	-25	18
whole behind over here-before	21	8
whole behind quantity +1	-7	-6
whole behind quantity -1		-23
whole behind quantity -2	-38	14
whole behind quantity -3		-15
whole behind quantity here-after	21	-16
whole behind quantity here-before	-21	13
whole behind short +1	-11
whole behind short -1	-17
whole behind short -2	-29
whole behind short -3	-12
whole behind short -4	-8
whole behind short here-after	-26
whole behind short here-before	15
whole behind tall +1	-12
whole behind tall -1	15
whole behind tall here-before	-38
whole behind term +1	-10	-18
whole behind term -1	12
whole behind term -2	-13	-12
whole behind term -3	-6	-8
whole behind term -4	-19
whole behind term here-after	29
whole behind term here-before	11	-6
whole behind thick +1	-34
whole behind thick -1	29
whole behind thick here-before	-24
whole behind through here-after		7
whole behind through here-before		-17
whole behind to +1	-19
whole behind to -1	6
whole behind to -2	8
whole behind to here-after		-9
whole behind to here-before	24	19
whole behind toward -1	-22
whole behind toward -2	12
whole behind toward here-after	-53
whole behind under +1	-21
whole behind under -1	34
whole behind under -2	-15
whole behind under here-after	15
whole behind under here-before	50
whole behind up +1	-18
whole behind up -1	7
whole behind up -2	25
whole behind up -3	-18
whole behind up -4	-23	-11
whole behind up here-after	49	-7
whole behind up here-before	-48
whole behind wide +1	-18
whole behind wide -1	-47
whole behind wide -2	-28
whole behind wide -3	-11
whole behind wide -4	-12
whole behind wide here-before	25
whole behind with +1	-9
whole behind with -1	-11	-12
whole behind with -2	-7
whole behind with -3	13
whole behind with -4	-20
whole behind with here-after	13	-46
whole behind word +1	-19
whole behind word -1	7
whole behind word -2	11
whole behind word -3		-7
whole behind word -4	-18	-9
whole behind word here-after		-12
whole behind word here-before	16
whole behind-verb		-8
whole between 	18
whole between about	53
whole between and	-79
whole between be	28
whole between by	43
whole between come out	8
whole between cut	23
whole between for	29
whole between get		23
whole between has		29
whole between have		23
whole between have a		15
whole between is	29	11
whole between maybe	12
whole between measure	-18
whole between of	22
whole between only	25
whole between read	48
whole between run	44
whole between sit	-31
whole between still		24
whole between the		-43
whole between to	11
whole between up	31
whole carried	26
whole carried -1 none	8
whole carried -1 own	55
whole carried -1 person	10
whole carried -1 pointer	17
whole carried -1 tells	45
whole carried -2 none	27
whole carried -2 own	60
whole carried -2 pointer	24
whole carried -2 tells	28
whole carried -3 pointer	-15
whole carried -4 none	8
whole carried -4 own	21
whole carried here-before none	30
whole carried here-before pointer	34
whole carried here-before tells	24
whole counted bare			9
whole counted count	-12	-7	40
whole counted current	14		9
whole counted length	7	-8	-7
whole counted pack	7
whole counted percent	32		11
whole counted power	-27
whole counted pressure	-7	-13	-7
whole counted slope	-22
whole counted time	30	-32	-26
whole counted volume	8		-36
whole counted weight			-20
whole does ask fixture			39
whole does ask material			13
whole does ask part			24
whole does ask surface			-30
whole does ask verbish			-10
whole does ask word			47
whole does be area			46
whole does be defect			-32
whole does be finish			-41
whole does be fixture			19
whole does be part			25
whole does be surface			12
whole does be tells			-40
whole does be tool			10
whole does bring defect			-43
whole does bring material			21
whole does bring part			35
whole does bring tool			19
whole does bring word			-11
whole does call area			-21
whole does call defect			-25
whole does call material			9
whole does call part			-14
whole does call surface			16
whole does call word			16
whole does change material			44
whole does change surface			-10
whole does clean defect			-17
whole does clean fixture			-11
whole does clean material			-11
whole does clean part			-14
whole does clean surface			6
whole does clean word			-19
whole does come area			-9
whole does come defect			-45
whole does come material			-26
whole does come surface			31
whole does come verbish			34
whole does come word			-20
whole does cut area			8
whole does cut defect			16
whole does cut fixture			9
whole does cut part			19
whole does cut size			-8
whole does cut surface			-15
whole does cut verbish			-15
whole does cut word			-13
whole does dig word			7
whole does do defect			-11
whole does do material			-39
whole does do part			15
whole does do word			-32
whole does drill defect			38
whole does dry area			82
whole does dry material			-59
whole does dry word			30
whole does fill defect			97
whole does fill fixture			-20
whole does fill material			-7
whole does fill surface			38
whole does fill word			-28
whole does fix material			-28
whole does flip word			-8
whole does fre fixture			-29
whole does fre part			30
whole does fre word			-27
whole does get area			6
whole does get finish			-27
whole does get fixture			14
whole does get material			8
whole does get part			-15
whole does get surface			53
whole does get tool			-13
whole does get word			-18
whole does glue area			-25
whole does glue defect			19
whole does glue material			-16
whole does glue surface			21
whole does glue word			-40
whole does go area			-23
whole does go defect			-25
whole does go finish			12
whole does go fixture			-24
whole does go surface			26
whole does go verbish			-7
whole does go word			18
whole does hang area			-52
whole does hang defect			-8
whole does hang part			-9
whole does hang word			-22
whole does has material			52
whole does have area			6
whole does have defect			15
whole does have fixture			-27
whole does have material			-37
whole does have part			20
whole does have surface			32
whole does have tool			-15
whole does have verbish			-30
whole does have word			-33
whole does leave material			33
whole does leave surface			-17
whole does leave word			-40
whole does let material			17
whole does let surface			-29
whole does let word			-50
whole does look fixture			16
whole does look material			-16
whole does look part			-13
whole does look word			46
whole does make defect			26
whole does make material			-18
whole does make word			-18
whole does move material			-54
whole does move part			-34
whole does move surface			15
whole does move word			28
whole does need defect			34
whole does need fixture			31
whole does need material			23
whole does need part			50
whole does need size			-8
whole does need surface			-30
whole does need verbish			-18
whole does need word			-15
whole does open area			-13
whole does open defect			94
whole does open part			28
whole does open surface			-20
whole does open word			-32
whole does order word			-25
whole does paint material			26
whole does patch surface			26
whole does plane fixture			41
whole does plane surface			-10
whole does plane word			-10
whole does pull defect			-42
whole does pull fixture			47
whole does pull material			-50
whole does pull part			-36
whole does pull word			-36
whole does put area			-25
whole does put defect			-8
whole does put finish			-7
whole does put fixture			8
whole does put material			-7
whole does put part			-11
whole does put size			40
whole does put surface			-33
whole does put verbish			15
whole does put word			-23
whole does replace defect			-28
whole does replace material			8
whole does replace part			-15
whole does replace surface			-16
whole does replace word			-35
whole does reset defect			-38
whole does reset word			-29
whole does rip defect			-18
whole does rip material			6
whole does run area			17
whole does run defect			14
whole does run fixture			41
whole does run material			-57
whole does run part			17
whole does run word			-47
whole does sand area			17
whole does sand defect			14
whole does sand fixture			48
whole does sand material			11
whole does sand surface			62
whole does sand word			-36
whole does say area			-15
whole does say fixture			-15
whole does say material			-15
whole does say part			-9
whole does say surface			-33
whole does say verbish			-36
whole does say word			-34
whole does seal material			29
whole does see defect			-11
whole does see fixture			-20
whole does see part			-19
whole does see surface			46
whole does see word			-14
whole does send defect			25
whole does send material			41
whole does send surface			-24
whole does send word			-14
whole does set defect			-11
whole does set material			15
whole does shim defect			-45
whole does shim word			36
whole does sister material			30
whole does sister word			-23
whole does snug part			-7
whole does snug word			11
whole does splice defect			-9
whole does splice material			19
whole does swap area			-43
whole does swap defect			-24
whole does swap fixture			12
whole does swap material			-19
whole does swap part			10
whole does swap surface			-40
whole does swap verbish			-14
whole does swap word			11
whole does take area			8
whole does take defect			-33
whole does take fixture			15
whole does take surface			-18
whole does take word			37
whole does tape defect			18
whole does tape material			15
whole does tape part			-29
whole does tape word			-10
whole does tell verbish			11
whole does tell word			30
whole does tighten defect			-17
whole does trim defect			-26
whole does trim word			-7
whole does turn material			-17
whole does turn part			-16
whole does want defect			-43
whole does want finish			-7
whole does want material			38
whole does want part			-18
whole does want surface			6
whole far after 0	40	-12
whole far after 13+	-22	-12
whole far after 2	9
whole far after 3-4	-17
whole far after 5-7	-19
whole far after 8-12	-23
whole far before 0	18		9
whole far before 1	18	9
whole far before 13+	-24	-14	-20
whole far before 2	21
whole far before 3-4			7
whole far before 5-7	13	-8
whole figure-between		-11
whole flawed	-9
whole frame copula +1	-18	-8
whole frame copula -1			14
whole frame copula -2		-11
whole frame copula -3	-11		-8
whole frame copula -4	-12	-11	-11
whole frame copula area			33
whole frame copula defect			-15
whole frame copula fixture			33
whole frame copula here-after	16	-13
whole frame copula here-before	11		13
whole frame copula material			-8
whole frame copula part			17
whole frame copula size			15
whole frame copula tells			-29
whole frame copula tool			-20
whole frame copula word			-22
whole frame imperative +1	-21	51
whole frame imperative -1	80		9
whole frame imperative -2	-15	44	14
whole frame imperative -3	-17	-15	-7
whole frame imperative -4		-27	-15
whole frame imperative defect			-7
whole frame imperative fixture			28
whole frame imperative here-after	-42	-15
whole frame imperative here-before	23	24	25
whole frame imperative part			13
whole frame imperative size			29
whole frame imperative surface			14
whole frame imperative tells			47
whole frame imperative tool			6
whole frame imperative verbish			-27
whole frame imperative word			-17
whole frame modal +1	-18	34
whole frame modal -1	32	-14
whole frame modal -2	-11	11
whole frame modal -3	-15	-8	-21
whole frame modal -4	-20	-14	-17
whole frame modal area			-7
whole frame modal finish			7
whole frame modal fixture			17
whole frame modal here-after	33
whole frame modal here-before	36		29
whole frame modal part			-9
whole frame modal size			-6
whole frame modal surface			-8
whole frame modal tells			-30
whole frame modal tool			-23
whole frame modal word			-22
whole frame none +1	-21	-11
whole frame none -1			15
whole frame none -3	-15	-14
whole frame none -4	-22	-7	-19
whole frame none area			-10
whole frame none finish			-21
whole frame none here-after	13	-17
whole frame none here-before	13		-28
whole frame none material			14
whole frame none part			11
whole frame none surface			10
whole frame none tells			-35
whole frame none word			-12
whole frame owed +1	-12	-6
whole frame owed -1			15
whole frame owed -2	-16	-16	22
whole frame owed -3		-16
whole frame owed -4	7	-10	-25
whole frame owed area			19
whole frame owed defect			-25
whole frame owed finish			-33
whole frame owed fixture			15
whole frame owed here-after	13	7
whole frame owed here-before		52	19
whole frame owed material			11
whole frame owed part			9
whole frame owed size			-9
whole frame owed surface			37
whole frame owed tells			-22
whole frame owed tool			-16
whole frame owed verbish			-11
whole frame past +1	-17	-14
whole frame past -1	-11	-16
whole frame past -2			-8
whole frame past -3	-9	-8	-32
whole frame past -4	-17		-17
whole frame past area			-8
whole frame past defect			-20
whole frame past finish			-15
whole frame past here-after		6
whole frame past here-before	24	12	-19
whole frame past surface			-14
whole frame past tells			25
whole frame past tool			-22
whole frame past verbish			-27
whole frame past word			-22
whole frame past work			-14
whole frame present +1	-21	-14
whole frame present -1	7	-15	-7
whole frame present -2	13	-13
whole frame present -4	-11		-9
whole frame present area			-14
whole frame present defect			18
whole frame present finish			17
whole frame present fixture			31
whole frame present here-after	10	-9
whole frame present here-before	28		23
whole frame present material			-28
whole frame present size			14
whole frame present surface			7
whole frame present tells			-28
whole frame present verbish			-8
whole heading	-10
whole heading +1	-16
whole heading -1	-12	18
whole heading -2	-11	-7
whole heading -3			9
whole heading -4	-10
whole heading here-after	29	-13
whole heading here-before	35		-29
whole is-flaw	-18	-14
whole kind +1 area	-11
whole kind +1 defect	-13
whole kind +1 finish	-15	-9
whole kind +1 fixture	-15
whole kind +1 material	-13	-8
whole kind +1 part	-17
whole kind +1 size	-6
whole kind +1 surface	-14
whole kind +1 tells	-14
whole kind +1 tool	-10
whole kind +1 verbish	-10
whole kind +1 word	-13
whole kind -1 area		24	26
whole kind -1 defect	-21	-17	-7
whole kind -1 finish		24	6
whole kind -1 fixture	29	12	9
whole kind -1 material		-7	10
whole kind -1 part	22		9
whole kind -1 size	17	-14	27
whole kind -1 tells		-28	8
whole kind -1 tool	-12	-16
whole kind -1 verbish		-6
whole kind -1 word	-7
whole kind -1 work	-8
whole kind -2 area	-25		-32
whole kind -2 defect		-9	-18
whole kind -2 finish	-25
whole kind -2 fixture	37	6	40
whole kind -2 material			-6
whole kind -2 part		-9	18
whole kind -2 size	-24	10	24
whole kind -2 surface	-9	14	15
whole kind -2 tells	-15	-12	12
whole kind -2 tool	-8	-12	-12
whole kind -2 verbish			-9
whole kind -2 word	-9		-9
whole kind -2 work	-24	-8	-18
whole kind -3 area		8
whole kind -3 defect	-16
whole kind -3 finish	-11		-26
whole kind -3 fixture	-14		7
whole kind -3 material	-8
whole kind -3 part			-12
whole kind -3 size	-21		-14
whole kind -3 surface		-9
whole kind -3 tells	-8		-26
whole kind -3 tool	-13		-25
whole kind -3 verbish	-13	-8	-19
whole kind -3 word		-6	-11
whole kind -3 work	-13
whole kind -4 area			12
whole kind -4 defect	-10		-13
whole kind -4 finish	-9		-10
whole kind -4 fixture	10		6
whole kind -4 material	-12		-13
whole kind -4 part	-11
whole kind -4 size	-15		-17
whole kind -4 surface	-11
whole kind -4 tells	-10	15	-22
whole kind -4 tool	11		-16
whole kind -4 verbish	-11		-15
whole kind -4 word	-8		-11
whole kind -4 work	-8		-26
whole kind area	-10
whole kind defect		-13	-12
whole kind finish	-11
whole kind fixture	12	10	16
whole kind here-after area	-16	17
whole kind here-after defect	-17	-13
whole kind here-after finish		-11
whole kind here-after fixture	-7	6
whole kind here-after material	37	-7
whole kind here-after part	-8	9
whole kind here-after size	34	-9
whole kind here-after surface	15
whole kind here-after tells		-6
whole kind here-after tool		-24
whole kind here-after word		-9
whole kind here-before area	-19	-9	-45
whole kind here-before defect	54	-15	21
whole kind here-before finish	6		17
whole kind here-before fixture		16	-22
whole kind here-before material	9		48
whole kind here-before part	11		7
whole kind here-before size	14	6	16
whole kind here-before surface	25	17
whole kind here-before tells	6	16	-36
whole kind here-before tool	-16	9	-11
whole kind here-before verbish	-9	-15	-17
whole kind here-before word			-8
whole kind material		-7
whole kind size			6
whole kind tells			-10
whole kind tool		-8	-14
whole kind verbish	-6		-13
whole kind word	-15	-9	-15
whole kind work	-17	-7	-33
whole lead a -1	6	6
whole lead a -2	-9	-24
whole lead a -3	-25	-14
whole lead a -4	-20
whole lead a here-after	106	-17
whole lead a here-before	-32	-7
whole lead about -2	8
whole lead about -3	-14
whole lead about -4	-19
whole lead about here-after	-16
whole lead about here-before	48
whole lead area -1		-14
whole lead area -2		25
whole lead area -3		-7
whole lead area -4		-8
whole lead area here-after		-13
whole lead area here-before	-25
whole lead at -1	-12
whole lead at -2	15
whole lead at -3	-18
whole lead at -4	-28
whole lead at here-after	-19
whole lead at here-before	9
whole lead by -2	8
whole lead by -3	-19
whole lead by here-after	-21
whole lead by here-before	17
whole lead defect -1	-24
whole lead defect -2	-15
whole lead defect -3	-16
whole lead defect -4	-17
whole lead defect here-after	16
whole lead defect here-before	42
whole lead down -1	-29
whole lead down -2	27
whole lead down here-after	-76
whole lead down here-before	25
whole lead every -1	-38
whole lead every -2	-32
whole lead fixture -1	-37	6
whole lead fixture -2	-28	-6
whole lead fixture -3	-24	-6
whole lead fixture -4	-14
whole lead fixture here-after	-52	-18
whole lead fixture here-before	62	19
whole lead for -1	67
whole lead for -3	-13
whole lead for -4	-17
whole lead for here-before	29
whole lead in -1	29
whole lead in -2	-18
whole lead in -4	-20
whole lead in here-before	24
whole lead mark -1	11
whole lead mark -2	23
whole lead mark -4	-15
whole lead mark here-after	-58
whole lead mark here-before	14
whole lead material -1	24	15
whole lead material -2	-21	-13
whole lead material -3	-10
whole lead material -4	-18	-8
whole lead material here-after	23	-18
whole lead material here-before		-9
whole lead number here-before		54
whole lead of -1	94
whole lead of -2	-20
whole lead of -3	-21
whole lead of -4	-22
whole lead of here-after	11
whole lead of here-before	10
whole lead off here-after	-29
whole lead off here-before	28
whole lead out -2	-26
whole lead out -4	-21
whole lead out here-after	-25
whole lead out here-before	7
whole lead over -1	21
whole lead over -2	-24
whole lead over -3	27
whole lead over -4	-21
whole lead over here-before	29
whole lead part -1	-27
whole lead part -3	-20	-8
whole lead part -4	-30
whole lead part here-after	-54	-16
whole lead part here-before	24
whole lead past -2	9
whole lead quantity -1		43
whole lead quantity -2		8
whole lead quantity -3		-13
whole lead quantity -4	-8	-14
whole lead quantity here-after		6
whole lead quantity here-before		11
whole lead role here-after		59
whole lead size -1	-8	-27
whole lead size -2	-10
whole lead size -4	-17
whole lead size here-after	-57
whole lead size here-before	15	25
whole lead surface -2	-8	33
whole lead surface -3	-30	16
whole lead surface -4	-18	-6
whole lead surface here-after	-24	-15
whole lead surface here-before	15	8
whole lead tells -4		-6
whole lead tells here-after		-13
whole lead that here-after		36
whole lead that here-before		12
whole lead the -1		-14
whole lead the -2		-14
whole lead the -3		-9
whole lead the -4		-13
whole lead the here-after	121	9
whole lead to -1	-10
whole lead to -3	-20
whole lead to here-after	-8
whole lead to here-before	36
whole lead tool here-before		36
whole lead up -1	19
whole lead up -2	13
whole lead up -3	-21
whole lead up -4	-27
whole lead up here-before	37
whole lead verbish -1	19	-18
whole lead verbish -2		-9
whole lead verbish -3	-8	-8
whole lead verbish -4	-16	-9
whole lead verbish here-after	43	-12
whole lead verbish here-before		9
whole lead with -1	-22
whole lead with -4		-7
whole lead with here-after	86
whole lead with here-before		17
whole lead word -1	-7	-15
whole lead word -2		-17
whole lead word -3		-11
whole lead word -4		-7
whole lead word here-after	15	-8
whole lead word here-before	19
whole lemma be object		-17
whole lemma be subject-late	39	18
whole lemma call subject	-13
whole lemma cut object	-9
whole lemma drip object		8
whole lemma drip subject		8
whole lemma dump object		-11
whole lemma find object		30
whole lemma finish object	-33
whole lemma get object	44	-21
whole lemma get subject		-13
whole lemma go object	-16
whole lemma go subject		17
whole lemma hang object	14	-37
whole lemma hang subject		-23
whole lemma have object	60
whole lemma have subject-late	20	15
whole lemma hit object		-18
whole lemma hit subject		-7
whole lemma hold object	-6
whole lemma land object		-18
whole lemma land subject		-14
whole lemma leak object		-24
whole lemma leave object	46	-13
whole lemma measure object	44
whole lemma measure subject	-9
whole lemma move object	-20
whole lemma need object	-9	58
whole lemma pull object	-16	16
whole lemma put object	58	10
whole lemma read object	12
whole lemma rip subject	-8
whole lemma run object	-30
whole lemma run subject	21
whole lemma say object		61
whole lemma say subject	38	-19
whole lemma see object		17
whole lemma sit object	9	-37
whole lemma stick object		-17
whole lemma stick subject	18
whole lemma take object	-63
whole lemma use object		-53
whole lemma want object	47	-34
whole lemma want subject	-10
whole not-carried	-35
whole not-carried +1 none	-17
whole not-carried +1 own	-15
whole not-carried +1 person	-18
whole not-carried +1 pointer	-19
whole not-carried +1 tells	-14
whole not-carried -1 own	-27
whole not-carried -1 person	-39
whole not-carried -1 tells	8
whole not-carried -2 none	-24
whole not-carried -2 own	-23
whole not-carried -2 person	-18
whole not-carried -2 pointer	-31
whole not-carried -2 tells	-35
whole not-carried -3 none	-16
whole not-carried -3 own	-11
whole not-carried -3 person	-10
whole not-carried -3 pointer	-9
whole not-carried -3 tells	-17
whole not-carried -4 none	-19
whole not-carried -4 own	-16
whole not-carried -4 person	-14
whole not-carried -4 pointer	-22
whole not-carried here-after none	26
whole not-carried here-after own	29
whole not-carried here-after pointer	40
whole not-carried here-before none	6
whole not-carried here-before person	56
whole not-carried here-before pointer	24
whole not-carried here-before tells	11
whole not-told		-15
whole not-told +1		-10
whole not-told -1		10
whole not-told -3		-9
whole not-told here-after		-16
whole number many one			-24
whole number none one			-23
whole number one many			-8
whole opens-with +1	-20	9
whole opens-with -1	15	-17
whole opens-with -3		-16
whole opens-with -4	-19	-13
whole opens-with here-after	29
whole part +1 bare	-15
whole part +1 object	-14	-8
whole part +1 opens	-19
whole part +1 subject	-13
whole part +1 subject-late	-11	8
whole part -1 bare	-10	-10
whole part -1 object			8
whole part -1 subject	11
whole part -1 subject-late		10	7
whole part -2 bare	-17	-16
whole part -2 object		-7
whole part -2 opens			-7
whole part -2 subject-late	7	21	24
whole part -3 bare	-19		-16
whole part -3 object	-13	-10	-12
whole part -3 subject-late	-6
whole part -4 bare			-12
whole part -4 object	-16	-7	-15
whole part -4 opens	-9
whole part -4 subject	-10		-7
whole part -4 subject-late	8	-8
whole part bare	-10	-12	-6
whole part bare area			7
whole part bare defect	-15	-15	-26
whole part bare finish	-15		23
whole part bare fixture	7
whole part bare material			14
whole part bare part	-7	-6	20
whole part bare size	11		31
whole part bare surface	-10	-14
whole part bare tool	45		18
whole part bare verbish	-8	-22	-32
whole part bare word	-12		-16
whole part bare work	-8
whole part here-after bare	13	-15
whole part here-after object	7	-8
whole part here-after subject		-6
whole part here-before bare	19	20	24
whole part here-before object	27		17
whole part here-before opens	10		-47
whole part here-before subject			8
whole part here-before subject-late	35	18	-19
whole part object	-9	-14
whole part object area	-21	10	16
whole part object defect		-11	-6
whole part object finish	-7		-14
whole part object fixture	6	9	23
whole part object material		-7
whole part object part			13
whole part object size	11	-10
whole part object surface	16		-8
whole part object tells	-18	-11	-10
whole part object tool	-13	-12	-18
whole part object verbish			-8
whole part object word	-14	-8	-13
whole part object work	-8	-8	-13
whole part opens finish	-20		-22
whole part opens material	-6		-7
whole part opens part	11		-10
whole part opens size		-13	-21
whole part opens surface	-18	7	23
whole part opens tells	11		-20
whole part opens tool	-8
whole part opens verbish		-14	-16
whole part opens work	-22		-24
whole part subject area	-11
whole part subject defect	-25	-8	-40
whole part subject finish		7	48
whole part subject fixture	10
whole part subject material	-8
whole part subject part			-6
whole part subject size			26
whole part subject tells		-9	-32
whole part subject tool			-17
whole part subject verbish	-14	16	-17
whole part subject word			-7
whole part subject work	-7	-10
whole part subject-late	11	12
whole part subject-late area			-22
whole part subject-late defect	-48	-20	-27
whole part subject-late finish	-16	13	23
whole part subject-late fixture	29	24	35
whole part subject-late material	13		-10
whole part subject-late part	37	6	6
whole part subject-late size	34	33
whole part subject-late surface	25	41	41
whole part subject-late tells			63
whole part subject-late tool		23	8
whole part subject-late verbish		-34	-12
whole part subject-late word	-19		-7
whole points both -3			-17
whole points both object			-39
whole points both subject			27
whole points em -1			-38
whole points em -2			15
whole points em -4			-46
whole points em bare			-59
whole points em here-before			16
whole points em object			-12
whole points em opens			-21
whole points em subject			-11
whole points em subject-late			19
whole points it -3			-7
whole points it -4			-12
whole points it here-before			-15
whole points it object			-14
whole points none -3			-21
whole points none -4			-15
whole points none bare			-11
whole points none here-before			22
whole points none object			-14
whole points none opens			-8
whole points none subject-late			15
whole points one -1			10
whole points one -2			-9
whole points one -3			-25
whole points one here-before			78
whole points one object			8
whole points one opens			20
whole points one subject			15
whole points one subject-late			-17
whole points that -1			30
whole points that -2			13
whole points that -3			-8
whole points that -4			-33
whole points that bare			-32
whole points that here-before			8
whole points that object			20
whole points that opens			-14
whole points that subject			-11
whole points that subject-late			12
whole points them -1			64
whole points them -2			-27
whole points them -3			-20
whole points them -4			-50
whole points them bare			-10
whole points them here-before			-37
whole points them opens			-19
whole points them subject-late			-27
whole points they -1			-25
whole points they -3			-7
whole points they bare			-29
whole points they here-before			-55
whole points they object			-14
whole points they subject			-21
whole points they subject-late			24
whole points this -1			12
whole points this -2			46
whole points those -1			43
whole points those -2			-36
whole points those -3			24
whole points those -4			-49
whole points those bare			-16
whole points those here-before			10
whole points those object			34
whole points those opens			-10
whole points those subject			-7
whole points those subject-late			-28
whole prep about		-13	-27
whole prep above	-11		-10
whole prep across		-17	-18
whole prep after	-15	-17	-19
whole prep along	-14	-26	-17
whole prep around	-17	27	28
whole prep at	-9		-10
whole prep before	-23	-6	-19
whole prep behind		18	57
whole prep below	48		-37
whole prep between	41	15
whole prep by	-28		-22
whole prep down		-13	-20
whole prep for		6
whole prep from	-13	-8	-29
whole prep here-after about		-14
whole prep here-after above	-16	-13
whole prep here-after along		-8
whole prep here-after at	43
whole prep here-after before	-50
whole prep here-after behind	35	28
whole prep here-after below	55	-11
whole prep here-after by	-20
whole prep here-after down		-12
whole prep here-after for	-35	-23
whole prep here-after from	13
whole prep here-after in	-40	18
whole prep here-after into		-13
whole prep here-after near		-36
whole prep here-after of	51
whole prep here-after off	51	-10
whole prep here-after on	-6	13
whole prep here-after out		-6
whole prep here-after over	-25
whole prep here-after past		-8
whole prep here-after through		64
whole prep here-after to	-26	-19
whole prep here-after toward	-50	-37
whole prep here-after under	13	-32
whole prep here-after up		25
whole prep here-after with	-10	-27
whole prep here-after without		-18
whole prep here-before at	-29		75
whole prep here-before behind	-13	14
whole prep here-before by	-55	23	-47
whole prep here-before for	-17	69
whole prep here-before from	-23
whole prep here-before in		14	-28
whole prep here-before of	33	13	-25
whole prep here-before off	-6	43
whole prep here-before on		8	-20
whole prep here-before over	43	38
whole prep here-before to	-24	97	8
whole prep here-before under	11	6
whole prep here-before with	73
whole prep in	-8		6
whole prep inside	-31	17
whole prep into	-9	-20	-7
whole prep near	-41	24
whole prep off	26		-13
whole prep on	-11	9
whole prep other about			-33
whole prep other above	-19	9	-11
whole prep other across	-12	-7	-18
whole prep other after		-10	-13
whole prep other along	-34		-17
whole prep other around	-20		28
whole prep other at	-17		-16
whole prep other before	-9		-19
whole prep other behind	-13		57
whole prep other below	9	-6	-37
whole prep other between	24	-9
whole prep other by	-19		-18
whole prep other down		-11	-20
whole prep other for			8
whole prep other from	-22	-12	-32
whole prep other in			8
whole prep other into		-8	-9
whole prep other near		26
whole prep other of	-7		6
whole prep other off			-11
whole prep other on	-13
whole prep other out	-14	-10	-13
whole prep other over	-31	-6
whole prep other past			-56
whole prep other through		-10
whole prep other to		-10	-28
whole prep other toward	-16	-11	-45
whole prep other under		20	-9
whole prep other up	18	-6
whole prep other without			-26
whole prep out	-6	-17	-8
whole prep over	-20		-9
whole prep past		-15	-56
whole prep per	-10
whole prep through		35
whole prep to	-11		-25
whole prep toward	-40	-35	-45
whole prep under	9		-10
whole prep up	38
whole prep with		-11
whole prep without	-7	-17	-26
whole rank after 0		-9
whole rank after 1	-18
whole rank after 2	-17
whole rank after 3	-11
whole rank after 4	-7
whole rank before 0	13
whole rank before 3	-8	-6
whole rank before 4	-18	-8	-21
whole says copula		-11
whole says imperative		9	10
whole says none	-10	-13	-9
whole says owed	-10		-14
whole says past	-8
whole says present		-10
whole sentences -1	-33	-12	-27
whole sentences -1 bare	-23	-14	-18
whole sentences -1 object	-22	-11	-18
whole sentences -1 opens	-18		-13
whole sentences -1 subject	-13		-6
whole sentences -1 subject-late	-8		-10
whole sentences -2	-27	-9	-26
whole sentences -2 bare	-16		-20
whole sentences -2 object	-11		-22
whole sentences -2 opens	-15
whole sentences -2 subject	-16		-15
whole sentences -2 subject-late		-7	13
whole sentences 1	-22	-13
whole sentences 1 bare	-13	-11
whole sentences 1 object	-10	-8
whole sentences 1 opens	-20
whole sentences 1 subject	-19
whole sentences 1 subject-late	-12	-9
whole size 1		-6
whole size 2	-16	-9	-12
whole size 3	-10		-13
whole stands-off-after		-10
whole subject none +1	-20
whole subject none -1	11
whole subject none -2	-8
whole subject none -3	-14	-16
whole subject none -4	-19	-7
whole subject none here-after	9	-12
whole subject none here-before	19	6
whole subject own +1	-18	-9
whole subject own -1	-9
whole subject own -2	-7
whole subject own -3	-7
whole subject own -4	-15	-8
whole subject own here-after	9	-15
whole subject own here-before	13	7
whole subject person +1	-29	31
whole subject person -1	-18	-55
whole subject person -2	-25	-9
whole subject person -3	-28	-9
whole subject person -4	20	7
whole subject person here-after	-29	11
whole subject person here-before	12	-25
whole subject pointer +1	-17	-15
whole subject pointer -1	12	-8
whole subject pointer -2	7	-23
whole subject pointer -3	-13	-9
whole subject pointer -4	-14	-11
whole subject pointer here-after	7	7
whole subject pointer here-before	27
whole subject tells +1	-14
whole subject tells -1	30
whole subject tells -2	-22
whole subject tells -3	-9
whole subject tells here-after	79	-10
whole subject tells here-before	19
whole told -1		7
whole told -2		6
whole told -3		-12
whole told -4		-6
whole told defect		-16
whole told finish		28
whole told fixture		14
whole told here-after		8
whole told size		-18
whole told surface		8
whole told tells		21
whole told tool		-11
whole told verbish		-17
whole touches-after	42
whole touches-before	19
whole unit area defect	12
whole unit area fixture	-24
whole unit area surface	31
whole unit area verbish	-9
whole unit area word	-7
whole unit current defect	-41
whole unit current part	18
whole unit current surface	-15
whole unit current verbish	-12
whole unit current word	-36
whole unit flow part	-18
whole unit flow word	-53
whole unit length area	-11
whole unit length finish	-16
whole unit length fixture	13
whole unit length tells	-18
whole unit length tool	-9
whole unit length word	-12
whole unit length work	-16
whole unit none defect	-19	-13
whole unit none fixture	18	10
whole unit none material	-6	-7
whole unit none size	12
whole unit none surface	15
whole unit none tells	19
whole unit none tool		-8
whole unit none verbish	-8
whole unit none word	-13	-9
whole unit none work		-7
whole unit other defect	-13
whole unit other material	-25
whole unit other part	-26
whole unit other word	-9
whole unit percent area	-7
whole unit percent defect	-24
whole unit percent finish	18
whole unit percent fixture	-18
whole unit percent material	-31
whole unit percent part	-32
whole unit percent size	24
whole unit percent surface	20
whole unit percent tells	-43
whole unit percent verbish	-24
whole unit percent word	-15
whole unit pressure area	-24
whole unit pressure defect	-20
whole unit pressure fixture	-36
whole unit pressure part	-13
whole unit pressure size	25
whole unit pressure surface	-28
whole unit pressure word	-32
whole unit slope material	-17
whole unit slope surface	-25
whole unit temperature area	9
whole unit temperature defect	-12
whole unit temperature material	-19
whole unit temperature part	-11
whole unit temperature size	-22
whole unit temperature word	-9
whole unit voltage defect	-41
whole unit voltage part	89
whole unit voltage word	-22
whole unit volume material	9
whole unit volume part	51
whole unit volume word	-45
whole use buy	-15	21
whole use have	33
whole use measure	6	-14	-14
whole use move	-10	-9
whole use need	-7	-8
whole use say	-7	23	23
whole use see	-11	-7	-22
whole use use		-32	-9
whole use work	-8	-7	-15
whole where +1	-18	-6
whole where -3	-11	-8	-12
whole where -4	-15	-10	-15
whole where here-after	8	-9
whole where here-before	16		7
`;
