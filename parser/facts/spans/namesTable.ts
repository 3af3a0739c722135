/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after at verbish	7
after behind fixture	-6
after by area	-6
after by defect	8
after end defect	-6
after in defect	-6
after in material	7
after in part	8
after in surface	-8
after in word	7
after on defect	-14	-7	-7
after on fixture	7
after on material	10
after on part	-12	-6	-6
after on surface	22	11	11
after on word	-6
after out surface	12	6	6
after quantity part	7
after quantity size	10	5	5
after quantity surface	-7
after quantity word	-8
after term area	5
after term defect	9
after term fixture	24	12	12
after term surface	-22	-11	-11
after word area	31	16	16
after word defect	-33	-16	-16
after word finish	-11	-6	-6
after word fixture	-16	-8	-8
after word part	6
after word size	-15	-7	-7
after word tells	-9
after word verbish	18	9	9
article a	-46	-5	15
article none			-24
article other	18	-6
article the	47	32	26
as ruled all far	35	52	31
as ruled all far+phrase	8	11	12
as ruled all here	87	52	62
as ruled all pair	71	45	24
as ruled all phrase		8	-17
as ruled all told	5	10	6
as ruled none far	-41	-73	-64
as ruled none far+here	-31	-19	-17
as ruled none far+phrase	-9	-16	-13
as ruled none here	-72	-64	-66
as ruled none pair	-35		10
as ruled none phrase	-20	-32	-27
as ruled none told	-24	-43	-34
as ruled some far	-27	-21	-20
as ruled some far+here	25	16	7
as ruled some far+phrase	14	19	23
as ruled some here	5	9
as ruled some pair	8	17	23
as ruled some phrase	6	10	8
as ruled some told	13	28	12
behind about -1	-12	-6	-6
behind about -4	17	8	8
behind about here-after	-5
behind at +1	-5
behind at -2	-9
behind at -3	11	6	6
behind at -4	-7
behind at here-after	9
behind behind -3	-6
behind behind here-after	13	6	6
behind behind here-before	-7
behind by -1	12	6	6
behind by -2	-12	-6	-6
behind by -3	-11	-6	-6
behind by here-before	16	8	8
behind down here-before	-6
behind end -1	28	14	14
behind end -2	11	6	6
behind end -3	-22	-11	-11
behind end here-after	-17	-8	-8
behind end here-before	-6
behind for -1	8
behind for -3	12	6	6
behind for here-after	-22	-11	-11
behind from -4	13	6	6
behind in +1	5
behind in -3	-6
behind in -4	-15	-7	-7
behind in here-after	16	8	8
behind mark -1	6
behind mark -2	8
behind mark -4	-13	-7	-7
behind mark here-after	7
behind number -3	-7
behind of -1	8
behind of here-after	6
behind off here-before	9
behind on +1	-12	-6	-6
behind on -2	-6
behind on -3	-15	-7	-7
behind on here-after	8
behind on here-before	9
behind out -3	-6
behind out -4	-5
behind out here-before	9
behind quantity +1	-20	-10	-10
behind quantity -1	-23	-11	-11
behind quantity -2	-29	-15	-15
behind quantity -3	35	17	17
behind quantity -4	14	7	7
behind quantity here-after	14	7	7
behind quantity here-before	10	5	5
behind short -1	-18	-9	-9
behind short -2	-6
behind short -3	24	12	12
behind term +1	7
behind term -1	9
behind term -2	-20	-10	-10
behind term -3	13	7	7
behind term here-after	15	8	8
behind term here-before	-13	-6	-6
behind to +1	7
behind to -1	-10
behind under here-after	9
behind up -1	-6
behind up -2	23	11	11
behind up -3	-9
behind up here-after	-11	-5	-5
behind with -1	5
behind word +1	-5
behind word -2	50	25	25
behind word -4	9
behind word here-after	-14	-7	-7
behind word here-before	-14	-7	-7
behind-verb	29	25	61
between 	26	13	13
between has a	7
between have	6
between i	6
between is	20	10	10
between still	5
by far	-28	-38	-48
by far lacks none 0	14	11	13
by far lacks none 1	-42	-47	-65
by far lacks none 2	-34	-23	-47
by far lacks none 3	16		6
by far lacks points 0	14	27	14
by far lacks points 1	7	-6	-14
by far lacks points 2			31
by far lacks points 3	-7
by far+here			-9
by far+here lacks none 1	-23	-24	-44
by far+here lacks none 2		7	9
by far+here lacks none 3	-13	-6	-12
by far+here lacks points 1	11	21	25
by far+here lacks points 2	12
by far+here lacks points 3	10		11
by far+phrase	11	14	20
by far+phrase lacks none 1	19	22	37
by far+phrase lacks none 2			6
by far+phrase lacks points 0	-8	-26
by far+phrase lacks points 1	-6	-7	-11
by far+phrase lacks points 2		14
by here	20
by here lacks none 1	54	68	56
by here lacks none 2	12	-16
by here lacks none 3	-9	-16	-18
by here lacks points 1	-17	-18	-9
by here lacks points 2	-11	-15	-14
by here lacks points 3	-11	-14	-15
by pair	30	55	49
by pair lacks none 2	15	19	32
by pair lacks none 3	16	22	26
by pair lacks points 2	6	23
by phrase	-17	-15	-36
by phrase lacks none 1	-8	-9	-15
by phrase lacks none 2		5	-7
by phrase lacks points 0	5	7	9
by phrase lacks points 1	-9	-12	-16
by phrase lacks points 2	-5	-7	-9
by told	-11	-15	-20
by told lacks none 0			-7
by told lacks none 1	-11	-21	-13
by told lacks none 2	-8	-11	-13
by told lacks none 3			9
by told lacks points 0		6	-16
by told lacks points 1	14	19	23
by told lacks points 2	-9	-16	-12
by told lacks points 3		9
counted bare	98	91	80
counted count	12	18	11
counted current		7
counted length	-12	-13	-13
counted time	5		11
counted volume	10	25	13
counted weight	6
does add far+here		6
does ask far+here	6	10	6
does ask kind surface	-6	-12	-6
does ask kind word		9
does be defect	-8	-15	-5
does be finish			-6
does be fixture	13	18	22
does be material			-14
does be part	-14	-14	-27
does be size		-9
does be surface	-6	-13
does be tool	-6	-6	-15
does bend kind word			7
does blow word			-5
does bolt far	6	6	14
does bolt far+here	-6	-6	-11
does bolt here	-6	-6	-13
does bolt kind word			-6
does book 	8	17	8
does book far	-8	-16	-8
does book far+here	10	19	10
does book far+phrase	-5	-10	-5
does book here		-8
does book kind word		6
does book told	9	18	9
does box far		8
does box far+here	-8	-15	-10
does box kind material			11
does box kind word		-7
does box pair	5	7	9
does bring area	-5	-10	-5
does bring far		-9
does bring far+phrase	7	15	7
does bring here		-7
does bring kind area	-6	-11	-6
does bring kind material		6
does bring kind tool		6
does bring pair		6
does bring part		10
does bring phrase		8
does bring told		-8
does buy 		-6
does buy far		6
does buy far+here		6
does buy far+phrase	-5	-10	-5
does buy here		-6
does call 		-6	-6
does call far		6	-8
does call far+here		-6
does call far+phrase	8	11	12
does call kind surface	8	20	8
does call surface	7	7	7
does call told	-7	-10	-10
does cap far+here			6
does caulk far		-7
does caulk far+here		10
does caulk here			5
does change 		-7
does change area	-8	-8	-12
does change defect		-7	-6
does change far+here	7	15	6
does change far+phrase	8	12	12
does change kind area	-7	-7	-10
does change kind defect		-6
does change kind material	11	19	14
does change kind part	8	11	14
does change kind surface	-7	-9	-12
does change kind verbish	8	14	10
does change kind word			-5
does change material	8	12	11
does change pair		-9
does change part	7	9	13
does change surface	-6	-6	-6
does change word			-8
does check 		8
does check defect		-7
does check far	-7	-11	-9
does check far+here	7	12	9
does check fixture		-5
does check here		6	8
does check kind defect		-7
does check kind material		10
does check kind word	5	8	8
does check material		6
does check told		8
does clamp kind material			-7
does clean defect			9
does clean far	-5	-6	-9
does clean far+here	6	6	11
does clean far+phrase			7
does clean fixture			-7
does clean kind defect			6
does clean kind fixture			-7
does clean kind material			5
does clean kind word	5	8	8
does clean material			-6
does clean part			7
does clear kind defect	5	5	5
does clear kind word			5
does close 	8	16	8
does close far	-10	-18	-11
does close far+here			7
does close kind area	6	6	6
does close kind material		6
does close kind surface	-6	-13	-6
does close kind verbish		7
does close kind word	-12	-22	-14
does close material		6
does close told	8	16	8
does close word		-6
does coat kind material	8	8	8
does come 		-7	-6
does come area		7
does come far	-20	-37	-24
does come far+here	-14	-21	-21
does come fixture	-9	-17	-9
does come here	10	21	9
does come kind defect		6
does come kind fixture	-12	-23	-14
does come kind part	-8	-14	-10
does come kind size		-8
does come kind surface	-8	-15	-10
does come kind tells		-8
does come kind tool		-6
does come kind word	6	14
does come material		10
does come pair	-6	-12	-6
does come surface		-7
does come told		-7	-6
does come verbish	7	14	7
does come word	11	22	11
does complete kind material			-8
does cover far+here	5	11
does cover kind word		6
does cure far		-9
does cut 	-8	-15	-9
does cut area	-8	-11	-12
does cut defect	10	13	17
does cut far		14	-6
does cut far+here	12	26	11
does cut far+phrase	-8	-10	-13
does cut fixture	-6	-9	-9
does cut here	5	6	10
does cut kind area	-9	-12	-14
does cut kind defect	6	15
does cut kind material		15
does cut kind part	-7	-10	-12
does cut kind surface	5	12
does cut kind tells	6	7	11
does cut kind tool			-7
does cut kind word	11	14	19
does cut material	5	13
does cut pair	5	10	6
does cut part	-7	-9	-12
does cut phrase			-8
does cut tells	9	9	9
does cut told	-6	-12	-7
does cut word			8
does dig far+here		5
does dig kind material	-9	-16	-9
does dig kind word	12	23	12
does do 	11	22	10
does do defect	5	10	5
does do far	-10	-18	-11
does do far+here	7	11	11
does do fixture	-7	-14	-7
does do here	-13	-30	-8
does do kind fixture			9
does do kind material		-6
does do kind word	-17	-32	-17
does do material	12	23	12
does do pair	-5	-12
does do surface	-5	-10	-7
does do told	11	23	11
does do word	-8	-18	-6
does drill far		-7
does drill far+here		7
does drill kind area			5
does drill kind fixture			-7
does drill kind material		6
does drill kind size	8	16	8
does drill kind surface		-6
does drill material	6	6	11
does drill part			-6
does drill size	8	8	8
does drip far	8	8	15
does drip kind defect			-6
does drip kind part	-7	-7	-14
does drip kind surface	10	10	10
does drip kind word			-7
does drop far+here		8
does drop far+phrase	7	7	7
does drop kind material		6
does drop kind part		7
does drop pair	-6	-12	-6
does drop part		7
does dry 	-7	-14	-8
does dry area		5
does dry far	6	13	7
does dry far+here	-9	-23
does dry fixture	18	18	18
does dry here	-5	-9	-6
does dry kind area	5	11
does dry kind fixture	12	22	13
does dry kind verbish	-8	-10	-13
does dry kind word	-13	-24	-14
does dry material	-14	-25	-14
does dry pair		6	-5
does dry phrase		-5
does dry told	-5	-10	-6
does dry word	-5	-10	-5
does fill defect	9	9	13
does fill far+here		7	7
does fill far+phrase	7	10	11
does fill fixture	-10	-10	-14
does fill kind defect	11	16	18
does fill kind fixture		-7
does fill kind material	-8	-7	-17
does fill kind part	-7	-11	-11
does fill kind size			6
does fill kind surface	20	28	33
does fill kind word			-7
does fill material	-8	-9	-14
does fill part	-10	-10	-16
does fill phrase			-7
does fill size	6	6	13
does fill surface	18	26	29
does fill told			10
does fill word	-5	-5	-10
does find 	13	25	13
does find far+here	-7	-11	-7
does find far+phrase	-9	-18	-9
does find kind surface	-8	-17	-8
does find kind word	-8	-17	-8
does find material		-6
does find told	14	28	14
does finish 		10
does finish far+here	9	15	13
does finish far+phrase		-7
does finish here	-21	-18	-43
does finish kind finish			-7
does finish kind material	-7	-7	-15
does finish kind part			-6
does finish kind size	6	6	13
does finish kind surface			-5
does finish material	-6	-6	-9
does finish told	5	11
does finish word			8
does fit far		8
does fit far+here	8	13	10
does fix 		-9	-6
does fix far	7	15
does fix far+here	10	9	22
does fix here		-9
does fix kind material	-7	-14	-6
does fix kind verbish	13	24	13
does fix material	-7	-7	-6
does fix pair	-7	-10	-12
does fix part	5	5	5
does fix told		-7
does flash 	8	8	8
does flash far			-6
does flush far			-6
does flush kind word	5	7	8
does get 		-10
does get area	-7	-13	-8
does get defect		5
does get far	-6	-13	-6
does get far+phrase	-8	-16	-8
does get finish		5
does get fixture	-8	-9	-17
does get here		-10
does get kind area		-5
does get kind part	-5	-11	-5
does get kind size		-8
does get kind surface	-8	-17	-8
does get kind tool		6
does get kind word		-9
does get material			-15
does get pair	-7	-14	-7
does get surface	9	14	15
does get verbish	-8	-13	-10
does get word		-11	6
does give far+here	-5	-8	-8
does give kind material	-5	-8	-7
does give material	-7	-13	-9
does give word	-7	-14	-7
does glue 		-5	-6
does glue far	12	16	19
does glue far+here	7		16
does glue here		-5	-9
does glue kind fixture	7	9	12
does glue kind material		6
does glue kind verbish	5		11
does glue told			-5
does glue verbish	6	6	12
does glue word	-6	-7	-11
does go 		-5
does go far	-15	-27	-17
does go far+here	-24	-40	-32
does go far+phrase	-8	-15	-8
does go fixture	-7	-12	-8
does go here	-7	-10	-9
does go kind area	-6	-11	-7
does go kind defect	-12	-24	-13
does go kind fixture	-9	-19	-7
does go kind material	-18	-33	-19
does go kind part		10
does go kind size	6	13	6
does go kind surface	-9	-15	-13
does go kind verbish	-13	-23	-16
does go material	-6	-14
does go part	7	15	6
does go tool	7	15	7
does go word		-7
does grab far+here		9
does grab kind material		6
does grind defect	8	8	8
does grind far	8	17	8
does grind kind defect	8	8	11
does grind kind material	12	22	11
does grind kind word	-6	-9	-10
does grind material	7	7	7
does grind word	-5	-5	-5
does grout 	10	19	10
does grout far	-7	-14	-7
does grout kind material	-13	-24	-13
does grout kind surface	12	20	16
does grout told	10	21	10
does hang 	10	20	9
does hang defect		-7	-6
does hang far	-12	-25	-8
does hang far+phrase	8	13	10
does hang here	14	16	25
does hang kind area		6
does hang kind defect	-5	-8	-7
does hang kind fixture	23	34	35
does hang kind material	-14	-27	-13
does hang kind size		6
does hang kind word	-10	-18	-11
does hang material	-6	-11
does hang told	8	17	8
does hang verbish		8
does have area		-7
does have fixture		-7
does have part	11	20	12
does head here			6
does hit 	11	16	11
does hit far		-7
does hit far+phrase	-8	-12	-8
does hit kind surface		8
does hit kind word	-5	-10	-5
does hit told	11	18	11
does hold 			7
does hold far	10	22	7
does hold far+here	-10	-18	-12
does hold far+phrase	-12	-12	-22
does hold kind material	-14	-23	-21
does hold kind part	-6	-6	-11
does hold kind surface	9	19	6
does hold kind word		9
does hold material	-8	-8	-8
does hold surface	10	10	10
does hold told			8
does hold word	6	6	6
does hook 		8
does hook far		-5
does hook kind word	10	12	10
does hook told		8
does i'll word		-7
does install far	-23	-30	-39
does install far+here		5	-19
does install here	13	6	30
does install kind area	-5		-15
does install kind defect		-5
does install kind fixture			19
does install kind material	-19	-22	-36
does install kind part	24	28	44
does install kind size	-10	-19	-11
does install kind surface		15	-7
does install kind tells	12	14	22
does install kind verbish		7
does install kind word	12	19	17
does install pair	29	43	45
does keep defect		9
does keep far	-7	-14	-7
does keep far+phrase		8
does keep kind defect		9
does keep kind material		-9
does keep kind surface		-9
does keep kind word		6
does keep material		-5
does lay 		-8	-5
does lay far	9	8	18
does lay far+here			-10
does lay kind area	-8	-8	-14
does lay kind finish	7	7	7
does lay kind material	6	7	9
does lay kind surface	6	6	9
does lay kind word		-6
does lay material			6
does lay word			-5
does leave far	-19	-34	-22
does leave far+here	-6	-12	-6
does leave far+phrase			-5
does leave kind area		-7
does leave kind fixture	-10	-18	-12
does leave kind part		-9	-5
does leave kind surface	-11	-23	-11
does leave kind word		-6	-6
does leave material	5	13	5
does leave part		8
does leave told	-6	-12	-7
does level far+here			-6
does level here	-6	-6	-12
does level kind defect			-9
does level kind material	-14	-14	-28
does level pair	-10	-10	-20
does lift far			8
does lift material	-5	-5	-5
does like word		7
does look 		6
does look area		9
does look defect		-6
does look far	5	11	5
does look far+here		8
does look far+phrase		5
does look kind area	5	11	5
does look kind defect		-7
does look kind material	8	16	8
does look kind part	9	18	9
does look kind surface		-8
does look kind tool		5
does look kind word		-6
does look pair		9
does look told		7
does make 	-7	-9	-12
does make defect	9	11	16
does make far		-7	-5
does make far+here		-8
does make far+phrase	8	9	15
does make here		-6
does make kind area		-6
does make kind defect	8	10	15
does make kind material	-8	-14	-9
does make kind part	-7	-9	-13
does make kind surface		5
does make kind word	9	12	16
does make pair		6
does make part	-6	-6	-6
does make phrase			-8
does make surface		9
does make told		-5
does make word			10
does measure far+phrase	6	6	12
does measure fixture	6	6	6
does measure kind fixture	6	6	6
does measure kind material	-5	-8	-5
does miss far+phrase		-7
does miss kind defect		-8
does miss kind material		9
does mount kind verbish	8	8	8
does move 		-7
does move far	-5	-6	-9
does move far+phrase		-8
does move kind fixture	-7	-12	-8
does move kind material	-6	-7	-11
does move kind part	6	10	10
does move kind word	6	10	8
does move material			-7
does move pair	6	10	6
does move part	6	9	6
does move told		-7
does move word		6	6
does nail far+here			6
does nail kind material	6	10	6
does need defect		9
does need fixture		6
does need material	6	12	6
does need surface		-7
does need verbish	-6	-13	-6
does need word	-9	-17	-9
does oil far	-6	-6	-7
does open area	6	6	6
does open defect	8	8	8
does open far	9	14	14
does open far+phrase	-10	-15	-14
does open here		-5
does open kind area	5	7	8
does open kind fixture		10
does open kind material		-7	-7
does open kind part		-8
does open kind word	-9	-13	-15
does open material			-5
does open surface			-5
does open word	-5	-8	-8
does order 	-6	-9	-8
does order far		-8
does order fixture		8
does order kind fixture		6
does order kind material		-5
does order kind surface		6
does order material		-12
does order phrase			-5
does order told		-6
does owe kind material		9
does pack far	-6	-8	-9
does pack here	5	7	8
does pack kind material	5	5	11
does pack kind part			-9
does pack kind word			5
does pack material	5	5	11
does paint 	10	20	11
does paint far	-12	-20	-16
does paint far+here	6	11	6
does paint kind area	9	17	9
does paint kind defect	-5	-10	-5
does paint kind material	-7	-15	-7
does paint kind surface	6	12	6
does paint kind word		7
does paint material	-8	-16	-7
does paint told	10	20	9
does pass far+here	11	11	17
does pass far+phrase			-6
does pass here			-5
does pass kind word			6
does patch far	6	15
does patch far+here		-6
does patch far+phrase			7
does patch kind area	7	7	9
does patch kind defect		5
does patch kind part	-9	-17	-9
does patch kind size	5	5	5
does patch kind surface	6	9	8
does patch kind verbish		-7	-7
does patch part	-6	-13	-6
does patch verbish	-5	-5	-5
does pick far+here	7	12	7
does pick kind word		8
does pick word		-6
does place far+here	6	6	6
does plane far	9	15	11
does plane fixture	9	18	9
does plane kind fixture	15	30	15
does plane kind material		8
does plane kind word	-10	-20	-10
does plane word	-8	-17	-8
does plug far			6
does plug kind material			-6
does plug kind surface	5	5	10
does plug material	-6	-6	-12
does polish kind surface	6	6	6
does pop kind word	-6	-6	-6
does pour far+here	8	8	17
does pour kind defect	-8	-8	-8
does pour kind material	7	14	7
does pour kind surface	5	5	13
does pour material	7	7	7
does pour pair	-7	-7	-7
does prime far+here	-7	-10	-11
does prime here	6	7	10
does prime kind surface		-7
does pull 		-6
does pull far+here	-11	-15	-18
does pull far+phrase	7	11	10
does pull here			-7
does pull kind finish	-9	-9	-9
does pull kind material		-8
does pull kind surface	8	11	14
does pull kind verbish	-6	-5	-14
does pull kind word	-7	-8	-13
does pull part	7	7	14
does pull surface		6	6
does pull told		-7
does pull word			-8
does put 	19	32	25
does put area	-6	-19
does put defect			-11
does put far		5
does put far+here	-27	-44	-38
does put far+phrase		-14	6
does put fixture			-5
does put here	-7	-9	-12
does put kind area		-8
does put kind defect			12
does put kind fixture		9	-6
does put kind material	-13	-17	-22
does put kind part	-6		-12
does put kind size	-5	-5	-11
does put kind surface			-10
does put kind tool		-6
does put kind word	-11	-27	-6
does put material	-13	-21	-19
does put part			-8
does put phrase	-8	-10	-13
does put surface		10
does put tells			-5
does put told	25	39	35
does put verbish		-6	-5
does put word		-5	16
does quote far+here		8
does rake far	7	7	7
does rake far+here	-8	-8	-8
does rake kind material	-7	-7	-7
does redo 	5	9	5
does redo far		-11
does redo far+here	6	9	6
does redo here		7
does redo kind part	11	20	11
does redo kind surface	-10	-18	-10
does redo material		-5
does redo part	11	11	11
does redo surface	-9	-9	-9
does redo told		9
does rehang far	8	6	17
does rehang kind material			-5
does replace 	-6	-9	-11
does replace far	21	40	22
does replace far+here	15	-13	60
does replace fixture	-11	-11	-17
does replace here	-5	-9	-7
does replace kind area	6	12	5
does replace kind defect	20	29	30
does replace kind fixture	-23	-28	-40
does replace kind material	16	12	36
does replace kind part	13	24	14
does replace kind size		-5
does replace kind surface			16
does replace kind verbish			11
does replace kind word	18		51
does replace kind work		-10
does replace pair	8	7	17
does replace part			7
does replace told	-5	-7	-9
does reset 			-6
does reset far		10
does reset far+here			10
does reset kind material			9
does reset kind part	9	9	17
does reset kind surface		10
does return kind fixture	-5	-10	-5
does return kind surface		6
does return kind word	6	12	6
does return pair		6
does return phrase		6
does return word		6
does rip 			6
does rip far+here	-6	-8	-9
does rip kind surface		-7
does rip kind word		8
does rip phrase	6	8	10
does roll far			-5
does roll kind material		7
does roll kind surface	6	6	11
does roll kind verbish	-6	-7	-11
does roll told		-5
does run 			5
does run far+here	-7	-13	-7
does run far+phrase		10
does run kind area		-5	-9
does run kind material		6
does run kind part	5	10	6
does run kind verbish	-6	-9	-8
does run material	5	6	9
does run pair			-6
does run verbish	-7	-7	-10
does sand far	10	19	12
does sand far+phrase			-5
does sand kind defect		7
does sand kind material		-5	-8
does sand kind part	7	14	7
does sand kind surface	-6	-12	-7
does sand kind word	8	13	11
does sand pair			10
does sand surface	-9	-17	-9
does sand word	9	15	11
does say defect	7	14	7
does say verbish		-7
does scrape 		8	7
does scrape area			-6
does scrape defect			-5
does scrape far	7	9	11
does scrape here		6	8
does scrape kind area			-5
does scrape kind material	9	8	18
does scrape kind surface			-5
does scrape material	10	10	23
does scrape surface			-11
does screw 		-6
does screw here			-7
does screw kind defect			-7
does screw kind fixture			-7
does screw kind material	8	9	14
does screw kind word	-7	-7	-15
does screw material	5	5	10
does screw pair			-6
does screw word			-5
does scribe kind material	5		11
does scribe material	6	6	12
does scribe surface			-5
does seal 		12
does seal area	8	8	8
does seal far	11	12	20
does seal far+here	-5	-12
does seal kind area	11	11	21
does seal kind material	-7	-6	-16
does seal kind surface	7	8	13
does seal kind word	-10	-21	-8
does seal material			-6
does seal surface			6
does seal told	5	12
does seal word	-11	-11	-13
does see defect		-6
does see far+here	6	13	6
does see kind area	-8	-16	-8
does see kind part		5
does see kind surface		8
does see kind word		-7
does see material		-7
does see pair		-7
does see part		7
does see surface		7
does see word		-6
does send far	12	24	12
does send far+phrase	11	22	11
does send here	7	13	8
does send kind area		-5
does send kind defect	10	14	10
does send kind material	-7	-14	-7
does send kind part	8	17	8
does send kind surface		-6
does send kind word	29	61	27
does send pair		7
does send surface	-14	-28	-14
does send word	9	21	6
does set 	-5	-9	-6
does set far			-7
does set far+here			-5
does set here	13	12	25
does set kind defect	-5	-6	-11
does set kind material	22	33	32
does set kind part		-9
does set kind surface	-15	-22	-23
does set kind tool			6
does set kind word			7
does set material	10	19	12
does set part		-9
does set surface	-6	-9	-8
does set told		-7
does set word		11
does shave far		5
does shim defect	-6	-7	-10
does shim far	-8	-12	-11
does shim far+here			5
does shim far+phrase	6	6	10
does shim here			-6
does shim kind defect	-6	-7	-10
does shim kind material		8
does shim kind word		6
does shim material		7
does shim told		-6
does shim word	6	11	6
does show kind material		-8
does show kind verbish		8
does show kind word		-6
does shut far+phrase			5
does shut kind part	6	6	13
does shut part	6	6	12
does shut word	-6	-6	-12
does sister far			8
does sister kind material	6	8	10
does sit far+here	-8	-15	-8
does sit kind fixture	-6	-8	-6
does sit kind part	7	7	7
does skim far		7
does skim kind word		10
does snug kind material	6	6	12
does snug material	6	6	12
does split far+here	5	5	5
does spray far+here	5	5	10
does spray here			-6
does start far	6	13	6
does start far+here	-8	-17	-8
does start far+phrase		7
does start here		7
does start kind area	10	20	10
does start kind fixture	14	28	14
does start kind part	-9	-17	-9
does start kind surface		9
does start kind word	-10	-20	-10
does start part	-7	-15	-7
does start surface		6
does stick 		-9	-5
does stick far		5	7
does stick far+here	-7	-13	-9
does stick far+phrase	-6	-7	-10
does stick kind material	6	9	10
does stick kind part			-6
does stick kind surface	-7	-9	-12
does stick kind word	-6	-10	-9
does stick pair		5
does stick told		-7
does stop far			-6
does straighten far			9
does strip 	8	8	15
does strip far+phrase	-7	-7	-15
does strip kind fixture			5
does strip kind material	-7	-8	-14
does strip kind word			-11
does strip material			-8
does strip pair			5
does strip told	8	8	8
does stuff far		-8
does swap 		-7
does swap far	9	11	16
does swap far+phrase	-8	-8	-15
does swap fixture	-6	-6	-12
does swap here			6
does swap kind defect		5
does swap kind fixture	-7	-7	-13
does swap kind material	7	7	13
does swap kind part	9	13	13
does swap kind surface			-5
does swap kind word			-5
does swap material	5	5	11
does swap pair		8
does swap part	6	9	8
does swap surface			-6
does swap told		-8
does swap verbish			7
does swap word			-5
does swing kind word		-6
does take 		10
does take defect	-6	-12	-7
does take far+here	-15	-12	-33
does take far+phrase	17	30	20
does take fixture			11
does take here	12	24	13
does take kind defect	-7	-13	-8
does take kind fixture	6	15
does take kind material			12
does take kind part	8	13	11
does take kind size		-6
does take kind surface	-12	-17	-19
does take kind tells		7
does take kind tool		11	-5
does take kind verbish	-8	-11	-12
does take kind word		21	-9
does take material		-5
does take pair	-9	-12	-16
does take part		7	5
does take surface	-6	-7	-12
does take told		8
does take verbish		-7	-7
does take word	20	45	14
does tape 		-5
does tape defect			5
does tape kind defect			7
does tape kind material			-10
does tape kind part	-7	-7	-10
does tape kind verbish	6	6	9
does tape kind word			6
does tape material			-5
does tape pair			9
does tape part	-11	-11	-16
does tape told		-5	-5
does tape word			8
does tell 		-9
does tell far	-5	-7	-9
does tell far+here		-8
does tell far+phrase		7
does tell kind verbish		6
does tell pair	5	8	5
does tell phrase			8
does tell surface		-5
does tell told	-7	-14	-7
does tell word	7	16	5
does test 	8	8	16
does test far+here	7	9	13
does test far+phrase	-5		-14
does test kind defect			8
does test kind part			-6
does test kind word			10
does test surface	6	6	6
does test told	8	8	16
does tie far	9	9	17
does tie kind material			6
does tie kind word	-6	-6	-11
does tighten kind defect			8
does tighten pair			6
does tile kind material		-7
does tile kind surface	6	11	6
does top 		-5
does top far+here	-6	-8	-10
does top far+phrase			-6
does top kind material	-7	-11	-10
does top kind word		7
does top told		-5
does touch kind area		-6
does touch kind surface	9	17	9
does touch kind tool		-6
does trim defect		-8
does trim kind defect		-8
does trip far+here	-6	-6	-6
does trip kind part	-7	-7	-7
does try kind word		6
does turn 	5	12
does turn area			-8
does turn far	-9	-15	-12
does turn far+here	10	16	13
does turn kind area			-8
does turn kind material			8
does turn kind word		6
does turn told	5	12
does use 		-6	-7
does use far+here		6
does use far+phrase		8	5
does use kind fixture	6	6	11
does use pair	-5	-5	-5
does use phrase			-6
does walk 	7	13	7
does walk far	5		5
does walk far+here	-12	-20	-12
does walk far+phrase		-5
does walk here		6
does walk kind area	8	8	8
does walk kind material	-11	-21	-11
does walk kind surface	6	13	6
does walk kind word		-12
does walk material	-13	-27	-13
does walk surface	6	13	6
does walk told	6	12	6
does walk word		-12
does want area		-10
does want defect	-5	-10	-5
does want fixture		6
does want part	-5	-10	-5
does want surface	7	13	7
does want verbish	-6	-11	-6
does wash far+here			8
does wash kind surface			6
does wire here			8
ends CONJ		-7
ends DET		-7
ends NEG	-6	-9	-6
ends Nidiom		-19	8
ends Nlabel	18	49	18
ends OPR	7	11	10
ends PREP	-20	-24	-7
ends PRON		6	-10
ends Q0		9
ends Qcount	-6	-11	-6
ends Qlength	-19	-28	-30
ends Qother			5
ends Qtime	-15	-15	-29
ends Vmeasureb	5
ends Vmeasurei	-10	-12	-11
ends Vmoveb		-9	-10
ends Vmovei		-9
ends Vmoves		5
ends Vneedb		-5
ends Vneeds	-10		-6
ends Votherb	5	6	-5
ends Votherpp	8
ends Vsayb	-19	-8	-11
ends Vsaypp		-8
ends Vseeb	-5	-8
ends Vworkb		26
ends Vworkbp	7
ends Vworkbpp	23	20	26
ends Vworki	9	10	15
ends Vworkpp	8	14	11
ends plain	44	28	8
ends tarea	6	8
ends tarea's			-10
ends tdefect	-30	-23	-15
ends tdefect's	6	6	6
ends tdefectVotherb	15	27	21
ends tdefectVotheri	-12	-19	-15
ends tdefectVotherpp		-6
ends tdefectVworkbpp	17	22	28
ends tdefectVworkp		-6	-6
ends tdefectVworkpp	-18	-25	-24
ends tdefectVworks		5
ends tfinish	-14	-15	-14
ends tfinishVworkb	-18	-13	-12
ends tfinishVworkpp			9
ends tfixture	30	45	45
ends tfixture's	24		11
ends tfixtureVworkb	12	8
ends tfixtureVworks	7	6	12
ends tmaterial	11	8	27
ends tmaterial's	24
ends tmaterialVotherb		12	7
ends tmaterialVworkb	20	26	18
ends tmaterialVworki	25	9	15
ends tmaterialVworks	-9		-12
ends tpart	22	18	10
ends tpart's	14	36	25
ends tpartVworkb		18	11
ends tpartVworki	-6
ends tpartVworks	19	7	8
ends trole	17	30	23
ends tsurface	11	28	7
ends tsurface's	16		-17
ends tsurfaceVworkb	-13	-13	9
ends tsurfaceVworki	-6	-8	-6
ends tsurfaceVworks		-7
ends ttool	10	14	14
ends ttool's	5	6
ends ttoolVworkb	-14	-28	-22
ends ttoolVworks	-13	-14
ends twork	-9	-19
ends verb	-20
ends w	-10	-15	-20
ends w's	-19	-17	-13
ends wed	-12	-13	-11
ends wing			-5
ends wly	-8	-10	-9
far after 0		-5	18
far after 1	8	29	43
far after 13+	-36	-46	-23
far after 2	18
far after 3-4	12	11	-12
far after 5-7	-42	-8	-49
far after 8-12	-39	-47	-71
far before 0	26	31	27
far before 1		-32	-7
far before 13+		5	-5
far before 2		11	-27
far before 3-4	24	46	45
far before 5-7	22		16
far before 8-12	12	9	13
figure-between	9
flawed	14	13	78
frame copula +1	-16	16
frame copula -1	-10	-24	-34
frame copula -2	7	-10
frame copula -3	-30	-43	-29
frame copula -4		18	17
frame copula area			-16
frame copula defect	-18	-38	-11
frame copula finish	-8	-12	-11
frame copula fixture	9	6	22
frame copula here-after	-6	-5	-17
frame copula here-before	21		7
frame copula material			-6
frame copula part			-13
frame copula surface	6	11	6
frame copula tool	-17	-21	-32
frame copula verbish	7	11	10
frame copula word	-16	-28	-22
frame imperative +1	-7	-23	-14
frame imperative -1	21	19	17
frame imperative -2			-9
frame imperative -3	6	11	5
frame imperative -4	-9
frame imperative area		-11
frame imperative defect		-7
frame imperative finish	7	12	7
frame imperative fixture	7	11	12
frame imperative material			7
frame imperative part		8
frame imperative surface			-5
frame imperative tells	-5	-11	-5
frame imperative verbish			9
frame imperative word	-6		-17
frame modal +1		-7
frame modal -1		-19	-12
frame modal -2		-14	-9
frame modal -3	11
frame modal -4	-11	-15
frame modal area	7	14	7
frame modal defect	-7	-17	-7
frame modal finish	-11	-15	-11
frame modal fixture	-5	-11	-5
frame modal here-after	-12		6
frame modal here-before		18	5
frame modal part	14	31	13
frame modal size		-9
frame modal surface	10	16	15
frame modal verbish	-14	-25	-17
frame modal word	-8	-20
frame modal work	-10	-20	-10
frame none +1	-34	-5	-19
frame none -1	19	59	19
frame none -2	33	28	29
frame none -3	10
frame none -4	5	-21
frame none area	-5	-10	-6
frame none defect	-8	-11	-13
frame none fixture	7	20
frame none here-after		-10	15
frame none here-before		-17	-15
frame none material		7	6
frame none part	8	9	16
frame none size	-12	-16	-20
frame none surface	-10	-15	-16
frame none tells	5	10	6
frame none verbish	-10	-17	-15
frame none word	22	31	39
frame none work	7	10	13
frame owed +1	-19	-45	-21
frame owed -1	-8	-19	-9
frame owed -2	16	36	13
frame owed -3		12	5
frame owed -4	6	15	6
frame owed area	8	18	8
frame owed fixture	8	15	9
frame owed here-after	17	27	18
frame owed here-before	6	13	6
frame owed material	16	30	19
frame owed part	-9	-19	-9
frame owed size	-8	-16	-8
frame owed surface	-8	-15	-8
frame owed tells	-6	-13	-6
frame owed tool		5
frame owed verbish	7	15	7
frame owed word	12	26	11
frame owed work		-5
frame past +1	23	21
frame past -1	15	27	40
frame past -2	-9	-29
frame past -3		13
frame past -4	-26	-5	-38
frame past area	-9	-17	-10
frame past defect		9	-7
frame past finish	-5	-9	-7
frame past here-after	7	-31	-21
frame past here-before		14	30
frame past material	-10	-10	-20
frame past part	11	13	20
frame past size	11	10	23
frame past surface	21	38	26
frame past tells	9		23
frame past tool		-10
frame past verbish	-15	-18	-26
frame past word			-9
frame present +1			-11
frame present -1	6		16
frame present -2	-11	11
frame present -3	10
frame present -4	15	-14
frame present area		-7
frame present defect	30	45	46
frame present finish			8
frame present here-after	-12	20
frame present material	-8	-15	-11
frame present part	12	23	14
frame present surface	-7	-10	-13
frame present tool			6
frame present word	-19	-25	-33
head 2 x	-11	-15	-14
head abajo	-6	-6	-6
head adhesive		-13
head air	-13	-16	-12
head air gap	7	7	7
head alone	-10	-7
head anybody		-7
head anyhow	-5
head anyone		-9
head anything	-11	-22	-12
head anywhere	-5
head apartment	-7	-6	-6
head arm	6
head aside	-11	-14	-9
head attic	9	7
head b	-5		-5
head back door	-6	-8	-8
head back room			-7
head back wall	12	6
head backing	5	5	5
head backset	9	9	9
head bad	-9	-9
head ballast	-22	-13	-13
head balusters	10	12	7
head bar		-6
head bare	-6	-6	-6
head base			10
head base coat	5	5	5
head bath	6	7	13
head bathroom	13	17	27
head batt	10
head batts			11
head bay	-13	-14	-10
head bays	-6	-6	-12
head bead			-6
head bed	-16	-10	-14
head bedroom	9	6	6
head bedroom 2	-11	-9	-11
head bedrooms		-7
head belt	-6
head bench	17	10	11
head bent	6
head better	-8	-14	-8
head bit	-24	-28	-17
head black		7
head blade	10	8
head blinds	27	18	27
head block	11	7	10
head blocking		-6
head board	26	22	23
head boards	50	49	53
head bolt	22	13	15
head bolts			6
head bonding primer	-7	-8	-7
head booked		-8
head bottom rail	-7	-8	-8
head bowed			-8
head bowl	9	6	9
head bowls	5	5	5
head box	-24	-17	-20
head boy		-6
head bracket			8
head brackets	18	20	17
head braided lines	-7	-7	-7
head branch	6	6	6
head breaker	6	14	11
head brick	-9		-9
head brown		9
head bubble	6	6	11
head bucket	-20	-23	-19
head bulkhead	11	11	11
head bumps	-7	-7	-7
head business	-6	-6	-6
head button	-13	-12	-12
head cabinet doors	10	10	10
head cabinet's	-6	-6	-6
head cabinets	16	27	14
head cable		-7
head cans	6	6	6
head carpet	-18	-13	-12
head cartridge		7	5
head casing		17
head cast	6	6	6
head ceiling	9	5
head ceiling's	-8	-12	-7
head chain	-9	-10	-16
head chimney	5	12	6
head chip	8	8	14
head chipped	7	7	7
head chk	-12	-12	-12
head clamps	-8	-7	5
head clean out	-8	-8	-8
head clear	-18	-13	-12
head cleats		-6
head clips	6
head closer			8
head closet	-9	-14	-5
head coat	9	16	7
head cock	-7	-14	-7
head coil	9	7	7
head collar	5	5	5
head color			-7
head column	18	10	10
head coming		-6
head coming off		-9
head cord	-23	-16	-15
head corner	-70	-56	-61
head corners	8	11	7
head cover			-7
head crack	28	40	33
head cracked	-10	-11	-12
head crawl			-7
head credit	9	9	9
head crown		12	7
head crown in	10	20	10
head crumbs	-5	-5	-5
head cut	29	29	31
head cut out	-10	-6	-6
head cutout	8	8	8
head damp		10
head dark	5	5	5
head dave		-9
head deal	-6	-6	-6
head deck	-8
head den		6
head det	6	6	6
head dining room	-7		-5
head dirty	-6	-6	-6
head dishwasher	7
head dishwasher's	10	10	12
head dog	-6
head door	-21	-23	-18
head door's	-15	-24	-13
head doors	37	50	26
head dowel	-15	-12	-12
head drain	-9		9
head drains	14	10	15
head drawer		-5
head drawer front	5
head drawers	-5
head drawing	-11	-11	-7
head drip	-18	-12	-19
head drop	6	10	7
head dry	-14	-11	-14
head dryer	-5	-6
head drywall	16	10
head duct			8
head due		7
head earliest	8	14	8
head east	5	5	5
head edge		11	13
head elbow	-7		-6
head electrical		8
head element	11	11	11
head enamel		-8
head end		-9	-7
head end panel	-8	-11	-7
head entry	9	13	7
head epoxy		10
head exam	6	6	6
head except	-13	-19	-11
head expansion tank	5	5	5
head face	-7	-6
head factory	-8
head fall	-13	-12	-15
head falls	6	-6
head fan	8	8	12
head fan's	8	8	8
head far		-8	-5
head fascia		6
head faucet	-9
head fella	-5
head fence	6
head filler		6	12
head filter			5
head finish		-7	-5
head fire		10
head fireplace	7	9	5
head first		-8
head first coat	10	15	19
head flange		5	-6
head flashing	-10	-11	-7
head flat	6	15	7
head flex			13
head float	14	6
head floor	8		13
head floor drain	13	13	14
head floor tile	7	7	7
head floor's	15	11	8
head flue	10
head foam	-11	-8	-14
head foil tape	-6	-6	-6
head frame	-10		-11
head freezer	-9	-9	-9
head fresh	6	6	6
head fridge	-20	-8	-12
head front	-6
head front door's	8	8	8
head front room	15	15	15
head full		5
head furnace	-6	-6	-7
head furniture		7
head gable	-11
head gap			5
head garage	-18	-25	-14
head gary	-8	-6	-6
head gas	8	15	5
head gasket	-5	-6	-11
head gate	14	17	9
head gauge	-11	-6	-6
head gfci	-6		-7
head globe	7	7	7
head glue	-31	-31	-28
head god	-9	-7	-7
head going		-9
head gray		-5
head grid	-8
head grille		-6
head grout	-18	-34	-29
head guest room	14	6
head gutters	9	6	6
head hall	8		9
head hallway	31	44	26
head hand	-20	-35	-21
head handle	-17	-20	-18
head handrail bracket	10	18	10
head hanging	13	12	10
head hard		7
head hatch	-12	-10	-11
head head			-7
head header		8
head heat	-10	-15	-10
head heater	7	7
head heating	-6	-6	-6
head height	7	9	13
head herringbone			8
head hinge	-8
head hole	-15
head hole's	-8	-8	-8
head holes	-5		13
head home	-9	-16	-9
head honeycomb	-5	-5	-5
head hood	-6
head hook	-6
head hooks	9
head hose	9		12
head hose bib	-10	-8	-6
head hot	15	12	15
head hot side	-9	-8	-8
head house	-8	-14	-15
head hump in	8	8	8
head hvac	-8	-8	-8
head inside	-13		-7
head inspection		-8
head instead	-5	-13	-7
head island	10	11	7
head itself		9	6
head jack		7
head jamb	-8	-7	-10
head jan	-5	-5	-5
head job	-6	-7	-8
head joint	8	8	12
head joints			8
head joist			-8
head joists	18	10	11
head keeper	-5
head key	-11	-12	-10
head kids room	8	8	8
head kit	13	13	8
head kitchen	12		-7
head kitchen faucet	-7	-6	-12
head kitchen island	11	6	6
head knee wall	-8	-8	-8
head knobs	6
head knots	7	7	7
head lags			-7
head lamp	-8	-13	-11
head landing	11	6	6
head latch	7		5
head laundry	27	30	31
head lav			-6
head layers	6		7
head lead	9	9	16
head leak			-5
head leaking			-5
head lean		-7
head leaning	13	6	5
head leg	14	10	10
head legs		-5	-7
head let go	-6	-5	-9
head level	-15	-14	-17
head lid	16	8	12
head lid's	7	7	7
head lift	-10	-11	-6
head light	-31	-24	-26
head light's	8	15	8
head lights		-10	-6
head line	14		20
head lip	-7	-7	-13
head list			6
head living room		9
head lock	8
head loop	10	11	19
head loose	-5		-11
head lunch	-8	-11	-11
head machine	-7	-8	-14
head main	12	8	10
head make	7	6
head marble	15	15	9
head master bath	-6	-6	-7
head mastic	-8	-8	-14
head me	-21	-33	-19
head membrane	5	7	5
head mesh	-16	-13	-23
head meter	-11
head microwave	-5	-5	-5
head middle	-25	-18	-23
head mind		-8
head mirror's		-7
head missing		-10
head miter	7	8
head mold	18	22	14
head mortar	-13	-17	-16
head mosaic	7	7	7
head motor	-8	-8	-8
head mud	-21	-22	-20
head nail	-7	-19	-13
head neutral	14	9	9
head newel	9	9	5
head nice	-7	-6	-12
head niche			10
head no hot water	12	12	12
head no water	-7	-7	-7
head north side	-8	-7	-7
head nosing	9	9	18
head not touching	-10	-10	-10
head nowhere	6
head number	-13	-13	-14
head numbers	5	5	5
head nursery	10	17	13
head nut	9		7
head oak	9	9	15
head oot	-7	-7	-7
head open	14	20	10
head opener	-11	-11	-11
head opening	-6
head openings	6	6	6
head oscar	-13	-24	-13
head outlet	14	11	18
head outside	8	10
head packing	-6	-6	-6
head pads	-6	-6	-6
head paint	-9	19
head pair	11	11	10
head pairs	-6	-6	-6
head pan	17	8	17
head panel	27	27	19
head pantry	11	14	7
head paper	8		7
head part			5
head particle board	-8	-8	-8
head party wall	11	11	11
head patch	14	14	11
head pavers	12	12	12
head pendant	12	12	12
head penny round	8	8	8
head people		9
head piece	17	25	21
head pinhole	7	7	7
head pipe	16	10	9
head place			-5
head planks	9	15	9
head plaster	7	13	5
head plastic	-6	-5	-9
head plates		7	6
head play	7	7	7
head plug		10	10
head plugs	-7	-10	-7
head plywood		7	6
head poly	-21	-32	-21
head porch	-6	-6	-6
head post	-6		-6
head posts	19	20	16
head powder room			-6
head primed			7
head primer	-35	-43	-41
head pull	-8	-10	-9
head pulls	8	10	6
head pump	21	9
head r		-6
head rack		-8	-5
head radiator		-8
head rafters	9	9	9
head rail's	12	14	12
head rails	-9	-8	-8
head rain	-10	-9	-6
head range	-5		-8
head ray		-7
head re		-5
head real	-8
head rear	12	10	9
head rec'd	10	10	10
head register			-6
head regulator	13	14	14
head remains	6	6	6
head replacement	5	9	5
head rigid		5	6
head ring	13	9	11
head risers		-6
head rm	14	19	7
head rock	-6	-12
head roof	6	12	10
head room	12	7	6
head roots	-6
head round	-9
head row		7
head rtu	-6
head run			-7
head runs		5
head s	-11	-9	-16
head salon	-23	-12	-13
head same	-5	-8	-5
head sample		5
head sand	-12
head sander	-5	-5	-5
head sash cord	8	6	6
head satin	-9	-8	-9
head say	-9	-9	-9
head scrap	17	8	13
head screed		7
head screen	15	13	13
head screw			-7
head screw pop	5	5	5
head screws	-13	-8	-9
head sealant	-6	-9	-5
head sealer	-14	-20	-18
head seam	31	38	37
head seams	-5	-9	-6
head second coat	-8	-11	-8
head section	-5	-5	-5
head self leveler	11	11	11
head shade	-8	-8	-8
head sheathing	16	9	8
head shed	-7	-10
head sheets	7		8
head shelf		14	20
head shellac primer	-11	-11	-11
head shoes	-6	-6	-6
head shop	-22	-32	-22
head shower	26	49	30
head shower tray	11	11	11
head side	-81	-66	-73
head sides	-10	-20	-10
head sign		-8
head sill		-10	-5
head sink	-23	-19	-20
head size	-8	-5
head skim	-9	-14	-7
head skirting	13	10	7
head slab		-9
head slate	8	18	9
head sleeve	10	8	6
head slide	5
head slider	-9
head slides	-7	-8	-6
head slip nut	7	7	7
head slope	15	7	9
head slow			-6
head smell	-6	-6	-6
head smoke	-6		-6
head snapped			-7
head snug	-6	-5	-7
head soap dish	12	12	12
head sock	6
head socket	-9	-7	-7
head soffit	-18	-10	-11
head soffit vents	7	7	7
head soft	9	10	16
head soft spot	8	8	8
head somewhere	8	10	7
head soon	-6	-7	-7
head spare	5	12
head spec	-9	-7	-7
head splash		10
head splice	6
head split	17	21	28
head spot	-7	14
head spots	-8	-7	-11
head spout			-8
head spring	-7		-7
head stack		-7
head stain	10	8	16
head stain blocker	-6	-6	-6
head stair	-6
head stairs	6	-6
head staple	-10	-10	-10
head steel			-5
head step	10	21	14
head steps	17	14	10
head sticker	-7	-7	-7
head stock	9
head stone	11	6	8
head store		7
head straight	-8	-6	-11
head street	17	6
head strike	7	8	9
head string	7
head stringer	8	8	8
head stub	6	6	13
head stud	6	9	7
head studs	7	14	8
head study	-9	-15	-8
head subfloor	7	12	6
head support	7	7	7
head supposed		-7
head surround	11	11	11
head switch		-10	-8
head tape	13	9	15
head tee		-7
head test		5
head thermostat	-17	-9	-5
head thinset		-8	-7
head threshold	19	21	16
head tile	16	-6	8
head tiles	18	17	16
head toe kick		8
head toilet	39	29	27
head toilet flange	10	7	8
head too long		-8
head too short	-5	-6	-10
head top	-7	9
head torn	-7	-9	-15
head towel	7	7	7
head track	-8	-5
head transition's	9	9	9
head trap	14	15	16
head travelers	17	9	9
head tread		6
head treads	26	19	19
head trench	8	8	8
head trim	7	22	12
head truck	8	13	9
head tub	-18	-16	-11
head tub's		6	12
head tube			9
head tubes	6	6	6
head turn	-6	-6	-6
head twice			-9
head two by eight	-5	-5	-5
head two by four	6	6	6
head two by three	-5	-5	-5
head under cabinet lights	8	8	8
head underside	-11	-11	-11
head union	-5	-6
head unit	-10	-10	-8
head upper	11	11	11
head uppers	-9	-9	-5
head upstairs hall			-6
head upstand	5	10	5
head us	-6	-6
head valve	5
head vanity	-5		-6
head vent	-9		-8
head vent pipe	6	6	6
head vinegar	-5	-9	-5
head vinyl		6
head wait	12	21	12
head waiting room	-6	-6	-6
head wall		-18	-21
head walls		-13
head want		-5
head wants	-7	-7	-5
head waste	6
head water	-31	-40	-33
head water heater's	7	7	7
head water line	9	9	9
head water's	-7
head wax			-6
head wax ring		-9	-14
head wc	9	9	9
head weatherstrip	17	9	9
head weight			7
head wet		9	5
head whenever	-6	-13	-5
head white	-25	-30	-23
head whoever	-11	-8	-8
head wind	-7
head window	10		19
head window sill	5	5	5
head window's	-5	-5	-5
head windows	-9	-11	-14
head wire	7	20	9
head wires	-10	-5	-5
head wood	-9	-11	-6
head wrong	-15	-13	-9
head you'd	-13	-8	-8
heading	18		-14
heading +1	22	33	7
heading -1	-36	-47	-31
heading -2		6
heading -3	41	8	18
heading -4	11	15
heading here-before	-10	-22	-10
is-flaw	18	9	9
join		11
join +1	-78	-70	-72
join +1 area	-16	-11	-14
join +1 defect	-7		-6
join +1 fixture	-13	-9	-9
join +1 material	-24	-14	-20
join +1 part		-12	-12
join +1 surface	-14	-12	-15
join +1 verbish	-9	-11	-9
join +1 word			13
join -1	13	39	22
join -1 area	11	-6
join -1 defect	-12
join -1 finish	-8	6
join -1 fixture	10	30	8
join -1 material	-14	-39	-23
join -1 part	-5	25	16
join -1 size	12	-6	9
join -1 surface	10	25	21
join -1 tells	18	22	14
join -1 tool	17
join -1 verbish		-11	-19
join -1 word	-28
join -2			10
join -2 area	5		-11
join -2 defect	-11	-18	12
join -2 finish	15	5	14
join -2 fixture	14	23
join -2 material	9	42	29
join -2 part	-7	-18	-6
join -2 size	15		7
join -2 surface		-29	-6
join -2 tells	-11	-11	-7
join -2 tool	-10	-8	-11
join -2 verbish	7	17
join -2 word	-31	-10	-19
join -2 work		8
join -3		10	-7
join -3 area		17
join -3 defect		-11	-8
join -3 finish	-7
join -3 fixture	13		22
join -3 material		15
join -3 part	36	18	18
join -3 size	-26	-30	-24
join -3 surface	15	21	23
join -3 tells	-14	-18	-11
join -3 tool	-16	-7	-10
join -3 verbish	6	8	7
join -3 word	-10	-21	-32
join area	34	9	12
join area+area		9
join area+defect	6
join area+finish	-15	-18	-17
join area+fixture			7
join area+material	27	26	27
join area+part	30	12	8
join area+size		-6
join area+surface	13
join area+tells		9
join area+tool	-6	-7
join area+verbish	-9	8
join area+word	-14	-19	-17
join defect	55	32	41
join defect+area	20
join defect+defect	-10	-11	-6
join defect+fixture	33	28	15
join defect+material		-16	-14
join defect+part	9	22	13
join defect+size	-15	-10	-9
join defect+surface	31	40	23
join defect+verbish	24	11	11
join defect+word	-8	-18	20
join finish		10
join finish+area	-7	-5
join finish+defect		-8
join finish+finish		8
join finish+fixture		11	6
join finish+material	11		-10
join finish+part	-6	-13	-10
join finish+surface	5	19	10
join finish+tool	-5
join finish+verbish		-6
join fixture	-68	-30	-59
join fixture+area	-21	-24	-28
join fixture+defect	-8		-13
join fixture+fixture	17	5
join fixture+material	-22		-5
join fixture+part	-21	-14	-20
join fixture+size	-17	-10	-10
join fixture+surface	-17
join fixture+verbish	10
join fixture+word			6
join heading	31	26	21
join leads 	15	26	10
join leads above	10	7	7
join leads around	12	10	9
join leads at	41	30	23
join leads before		-5
join leads between	-7	-7	-7
join leads by	40	42	32
join leads by term	-7
join leads for	6	-5
join leads from	7	-6
join leads in	24	13	8
join leads in term term	13	6	6
join leads in term word	6	6
join leads in word	-16	-11	-13
join leads in word term	5
join leads in word word	-5
join leads into	-8	-8	-8
join leads mark	25	23	25
join leads mark number	17	10	10
join leads near	12	7	6
join leads number	16	7	11
join leads number verb	6	6	6
join leads of	-6	-13	-25
join leads of quantity	-5
join leads of term word	5	15	8
join leads of word word	6
join leads off	25	11	11
join leads on	18	13	14
join leads on quantity	16	8	9
join leads on term verb	6
join leads on verb verb	-10	-10	-10
join leads out of	7	11	7
join leads over		8
join leads quantity	-13		-17
join leads quantity at	-10
join leads quantity of	14	15	9
join leads quantity on	-22	-11	-11
join leads quantity verb	9
join leads quantity word	5
join leads quantity word quantity	-7	-6	-8
join leads term	6	14	10
join leads term at	5
join leads term by	-7
join leads term in	19	10	10
join leads time	13	6	6
join leads time word		-5
join leads to	-26	-15
join leads under	28	17	25
join leads under word word	-13	-6	-6
join leads up		6
join leads up in	8	6	6
join leads up to	-5	-5	-5
join leads verb	19	43	14
join leads verb at	9	7	13
join leads verb at quantity	-5
join leads verb behind	8
join leads verb by	14	10	10
join leads verb from	-8
join leads verb in	12	8
join leads verb mark	11	6	6
join leads verb on	16	18	15
join leads verb on word	7
join leads verb out	-5
join leads verb over	-7	-7	-7
join leads verb quantity	16	15	14
join leads verb quantity in	8
join leads verb quantity of	-7
join leads verb quantity on	5
join leads verb quantity term	-8	-7	-7
join leads verb to		6	11
join leads verb verb in	7
join leads verb verb verb	6
join leads verb verb word	-13	-9	-9
join leads verb with	11	6	11
join leads verb word by	-8	-8	-8
join leads verb word in	-7
join leads verb word on	10	5	5
join leads verb word quantity	15	11	11
join leads verb word verb	-6
join leads verb word word	14	10	13
join leads with	-18	-17	-14
join leads with quantity	-9	-6	-6
join leads word	-53	-38	-12
join leads word on quantity	-6	-6	-6
join leads word quantity			-9
join leads word quantity of	-9	-11	-7
join leads word quantity on	-7
join leads word term verb	-5
join leads word term word	-7	-6	-6
join leads word verb	6	10	9
join leads word verb at	-7	-6	-6
join leads word verb in	-8
join leads word verb on	18	21	15
join leads word verb quantity	-12	-16	-10
join leads word word	-14	-13	-11
join leads word word on	-6
join leads word word verb	-41	-35	-31
join leads word word word	16	8	10
join material	-49	7	10
join material+area	13	16	19
join material+defect		41	18
join material+finish	-6		10
join material+fixture	-24	-5	-19
join material+material	11	24	24
join material+part	-14	-17	20
join material+size	-9	-9	-7
join material+surface		-22
join material+tells		-6
join material+tool			-9
join material+verbish		-11
join material+word	-36	-12	-44
join part	-95	-80	-93
join part+area	-28	-7	-18
join part+defect	-9	-18
join part+finish	-5	-8	-8
join part+fixture			6
join part+material	-29	-13	-19
join part+part	-10	-13	-30
join part+size	17	7	12
join part+surface	-13	-15	-9
join part+tool	-18	-15	-16
join part+verbish	-30	-11	-23
join part+word	8	-14	-11
join same-before	40	8	31
join same-before area	7
join same-before defect		5
join same-before finish	-22	-23	-31
join same-before fixture	5	-24
join same-before material	42	19	31
join same-before part	8	23	17
join same-before size	-21	9
join same-before surface	5	8
join same-before tells	-9
join same-before tool	23	24	7
join same-before verbish	-28	-24	-6
join same-before word	34	-14	7
join same-before work		6
join size	36	16	17
join size 1	-13	6	-15
join size 2	8		21
join size 3		5	-6
join size+fixture	8	10	9
join size+material	-8	-7
join size+part	9		5
join size+surface	14
join size+tells	5
join size+word	13	6
join sizes 1+1	-5	-17	-8
join sizes 1+2	-14	17
join sizes 1+3	8	9	-9
join sizes 2+1	-13	-13
join sizes 2+2		-6
join sizes 2+3	21	22	25
join sizes 3+1		6	-10
join sizes 3+2	13	6	8
join sizes 3+3	-12	-7
join surface	28	29	26
join surface+area	46	18	19
join surface+defect	-27	-24	-18
join surface+finish	-21	-15	-21
join surface+fixture	28	32	35
join surface+material	-7
join surface+part	-16	-15	-13
join surface+size		9
join surface+surface		5	17
join surface+tells	-6		-6
join surface+tool	-10	-7	-10
join surface+verbish	25	26	15
join surface+word	11	6	8
join tells	22	19	16
join tells+area	8	11	7
join tells+fixture	-16	-12	-14
join tells+material	32	22	17
join tells+part		6	7
join tells+surface	9
join tells+verbish	-7	-10	-8
join tells+word		11	10
join tool	14	15	7
join tool+area		8
join tool+defect		5
join tool+finish	5	10	5
join tool+fixture	-8	-7	-13
join tool+material	-8	11
join tool+part		-6	8
join tool+size	12	10	7
join tool+surface	20	12	10
join tool+tool		-9
join tool+verbish	21	14	11
join tool+word	-22	-23	-17
join verbish	-27	-26	-24
join verbish+area		-13
join verbish+defect		-7
join verbish+finish	-9	-11	-11
join verbish+fixture	-21	-26	-20
join verbish+material	-22	-17	-11
join verbish+part	47	38	30
join verbish+size	-9	-8	-6
join verbish+surface	-7	22
join verbish+verbish	-10
join verbish+word	-20	-17	-14
join word	70	28	45
join word+area	-36	-15	-29
join word+defect		-18	7
join word+finish	29	23	12
join word+fixture	20	7	21
join word+material	44		14
join word+part	11	40	18
join word+size	8	-9
join word+surface	-18	-27
join word+tells	-12
join word+tool	59	34	27
join word+verbish	-31	-38	-37
join word+word	24	30	26
join word+work		12
join work		-16	7
join work+area	6	6	6
join work+defect	6	12	6
join work+fixture	-6	-11	-6
join work+material		-7
join work+word	-8	-16	-6
kind +1 area	20	20	22
kind +1 defect	19		12
kind +1 finish	-9	-9	-14
kind +1 fixture	16	-6	15
kind +1 material	-8	15	-16
kind +1 part	-14		-11
kind +1 size	-7
kind +1 surface	17	14	8
kind +1 tells			7
kind +1 tool	14	11	14
kind +1 verbish	-38	-30	-32
kind +1 word	-70	-61	-80
kind +1 work	-8	-14	-8
kind -1 area	-11	-6	-16
kind -1 defect	16	28	34
kind -1 finish	-12	-17	-16
kind -1 fixture	-16	-16	-16
kind -1 material	13	10	12
kind -1 part	18	34	48
kind -1 size	21	14	5
kind -1 surface	-18	-7	-15
kind -1 tells			16
kind -1 tool	-6
kind -1 verbish			-13
kind -1 word	34	8
kind -1 work		-6
kind -2 area	-5		-8
kind -2 defect	-23	-40	-30
kind -2 finish	7		18
kind -2 fixture	28	17	21
kind -2 material	35	47	63
kind -2 part	5	10	-5
kind -2 size	12	6	8
kind -2 surface	-21	-47	-34
kind -2 tool	-9	-8
kind -2 verbish	-10	8
kind -2 word	10	22
kind -3 area	-41	-40	-40
kind -3 defect	26	17	22
kind -3 finish	-6	-9	-6
kind -3 fixture	-5	27	9
kind -3 material	18	-15	7
kind -3 part	11	12
kind -3 size	-18	-27	-20
kind -3 surface	16	11	-12
kind -3 tells	-5	-13
kind -3 tool	-6	-8
kind -3 verbish	18	17	10
kind -3 word	8	24	10
kind -4 area	35	46	51
kind -4 defect		9	-12
kind -4 fixture	15		12
kind -4 material	-6	-20	-9
kind -4 part	-41	-27	-39
kind -4 size	-13	-16
kind -4 surface	21	34	23
kind -4 tells	-9	-8	-7
kind -4 tool		-15	-9
kind -4 verbish	-23	-38	-20
kind -4 word	-9		-7
kind area			-9
kind defect	-38	-27	-8
kind finish	-38	-26	-29
kind fixture	49	46	43
kind here-after area	10	-15	-10
kind here-after defect	-49	-31	-20
kind here-after finish		10	10
kind here-after fixture	11	14
kind here-after material		7	-42
kind here-after part	51	46	46
kind here-after surface		21	17
kind here-after tells	-6	-5	-6
kind here-after tool	-9
kind here-after verbish	19	-15
kind here-after word	-31	-33
kind here-after work			9
kind here-before area	-7	-9	-10
kind here-before defect	-11	-11	-10
kind here-before finish	-17	-12	-21
kind here-before fixture	11	16	8
kind here-before material		-7
kind here-before part	32	6	12
kind here-before size	-8
kind here-before surface	6	6	23
kind here-before tells	5	7	5
kind here-before verbish		17	8
kind here-before word			7
kind here-before work			6
kind material	40	32	11
kind part	53	67	47
kind size	-6	-17
kind surface	14	24	8
kind tells	-20	-21	7
kind tool	-14	-19	-16
kind verbish	-13	-27	-29
kind word	-30	-28	-35
kind work	-11	-21
lead a -2	-10
lead a -3	-21	-11	-11
lead a -4	16	8	8
lead a here-after	12	6	6
lead area -1	10
lead fixture -4	24	12	12
lead fixture here-after	-12	-6	-6
lead material -2	-10	-5	-5
lead material -3	13	7	7
lead material here-after	-24	-12	-12
lead number -1	21	11	11
lead number -2	10	5	5
lead number -4	-10
lead number here-after	-7
lead on here-after	7
lead on here-before	-8
lead part -1	14	7	7
lead part -4	-6
lead part here-after	-18	-9	-9
lead part here-before	25	12	12
lead quantity -1	13	6	6
lead quantity -2	-13	-6	-6
lead quantity -3	19	10	10
lead quantity -4	-14	-7	-7
lead quantity here-after	-23	-11	-11
lead role -4	-7
lead role here-after	13	7	7
lead size here-before	-5
lead surface -1	-8
lead surface -2	6
lead surface here-before	10	5	5
lead tells -3	11	6	6
lead tells here-after	-5
lead tells here-before	-7
lead that -1	-6
lead that -3	-6
lead that here-after	6
lead the -1	-9
lead the -2	-10
lead the -3	-11	-5	-5
lead the -4	-13	-7	-7
lead the here-after	43	22	22
lead verbish -1	-6
lead verbish -2	37	19	19
lead verbish -3	11	5	5
lead verbish -4	10	5	5
lead verbish here-after	-12	-6	-6
lead with -2	6
lead with -3	-5
lead word -1	23	12	12
lead word -3	31	16	16
lead word -4	-14	-7	-7
lead word here-after	-11	-6	-6
lead word here-before	-14	-7	-7
led none far	-34	-50	-76
led none far+here	-17	-25	-20
led none here	6	-25	-32
led none none 0 outside 1		-24	-11
led none none 0 outside 2	-12
led none none 0 outside 3	9	13
led none none 0 outside 4	6	8
led none none 1 outside 0			-16
led none none 1 outside 1	14	13	9
led none none 1 outside 2	-17	-6	-17
led none none 1 outside 3		-33	-13
led none none 1 outside 4	-19
led none none 2 outside 0	20
led none none 2 outside 1	7	21	11
led none none 2 outside 2	-10	-17	-18
led none none 2 outside 3	-9	-14	-12
led none none 2 outside 4	-36	-18	-18
led none none 3 outside 0	17	8	7
led none none 3 outside 1		10
led none none 3 outside 2	-23	-25	-19
led none none 3 outside 3	-15	-5	-7
led none none 3 outside 4	20	7	9
led none points 0 outside 1		12
led none points 0 outside 2	-23	-39	-25
led none points 0 outside 3		-12
led none points 0 outside 4		5
led none points 1 outside 0	-23	-21	-17
led none points 1 outside 1	-20	-28	-21
led none points 1 outside 2	19		11
led none points 1 outside 3		20	6
led none points 1 outside 4	8	16	5
led none points 2 outside 0		11	12
led none points 2 outside 1	-7	-18	-7
led none points 2 outside 2			-8
led none points 2 outside 3		12
led none points 2 outside 4		-8	-7
led none points 3 outside 0			-5
led none points 3 outside 1	-12	-25	-15
led none points 3 outside 2	9	8	9
led none points 3 outside 3	-7
led none points 3 outside 4	9	17	9
led none told			-10
led turn far		9	-14
led turn far+here	-6	-13
led turn here	13	18	21
led turn none 0 outside 1	10	22	9
led turn none 0 outside 4	-11	-21	-13
led turn none 1 outside 0	11	17	17
led turn none 1 outside 2	-6	-9	-10
led turn none 1 outside 3		10	-17
led turn none 1 outside 4	-6	-13	-6
led turn none 2 outside 0			9
led turn none 2 outside 1	-16	-39	-9
led turn none 2 outside 2		-9
led turn none 2 outside 3		13
led turn none 2 outside 4		8
led turn none 3 outside 0		7
led turn none 3 outside 1	-10	-20	-9
led turn none 3 outside 2	11	20	12
led turn none 3 outside 3		-8
led turn pair	18	26	29
led turn points 0 outside 1	-13	-24	-15
led turn points 0 outside 3	10	21	9
led turn points 0 outside 4	13	30	9
led turn points 1 outside 0	5	7	8
led turn points 1 outside 1	8	14	10
led turn points 1 outside 3			-7
led turn points 1 outside 4	8	12	13
led turn points 2 outside 0	11	11	20
led turn points 2 outside 1	13	16	22
led turn points 2 outside 2		-13
led turn points 2 outside 3		-11
led turn points 3 outside 0	8	15	8
led turn points 3 outside 2	-8	-17	-7
led turn told	6	13
led verb far			13
led verb far+here	18	37	16
led verb far+phrase	11	14	20
led verb here			10
led verb none 0 outside 1	18	26	32
led verb none 0 outside 2		8
led verb none 0 outside 3		-8
led verb none 0 outside 4	-10	-16	-14
led verb none 1 outside 0	29	42	45
led verb none 1 outside 1	-7	-12	-11
led verb none 1 outside 2	6	5	11
led verb none 1 outside 3	-6	-12	-6
led verb none 1 outside 4	-16	-17	-33
led verb none 2 outside 0	16	32	18
led verb none 2 outside 1	-7		-22
led verb none 2 outside 2	15	21	26
led verb none 2 outside 3	-9	-20	-7
led verb none 3 outside 0	6	7	11
led verb none 3 outside 1	-9	-6	-24
led verb none 3 outside 2	21	28	37
led verb none 3 outside 3	-6	-15
led verb none 3 outside 4		-5	-5
led verb pair	21	40	23
led verb phrase	-17	-15	-36
led verb points 0 outside 0	8	11	13
led verb points 0 outside 1		13	-23
led verb points 0 outside 2	16	22	28
led verb points 0 outside 3	6	5	13
led verb points 0 outside 4	-12	-37
led verb points 1 outside 0	-19	-25	-31
led verb points 1 outside 1			-5
led verb points 1 outside 2	8	8	16
led verb points 1 outside 3	9	9	20
led verb points 1 outside 4	-10	-14	-15
led verb points 2 outside 0	-20	-21	-40
led verb points 2 outside 1			-8
led verb points 2 outside 2	10	22	9
led verb points 2 outside 3		7
led verb points 2 outside 4		-6
led verb points 3 outside 0	-16	-26	-22
led verb points 3 outside 1	10	18	13
led verb points 3 outside 2		8	6
led verb points 3 outside 3			9
led verb told	-13	-23	-17
lemma be object	-36	-18	-18
lemma be subject	37	18	18
lemma be subject-late	-5
lemma come subject	7
lemma find object	14	7	7
lemma get object	-11	-6	-6
lemma get subject	17	8	8
lemma get subject-late	-13	-7	-7
lemma go object	-11	-6	-6
lemma go subject	-14	-7	-7
lemma hang object	-9
lemma hang subject	10	5	5
lemma have object	7
lemma have subject	-22	-11	-11
lemma hit object	-10
lemma hum subject	-6
lemma keep subject	13	6	6
lemma leave object	15	8	8
lemma leave subject	-7
lemma pull object	-18	-9	-9
lemma run object	-10
lemma say subject	-21	-11	-11
lemma take object	8
lemma think object	-11	-5	-5
lemma trip object	5
lemma trip subject	-7
number many many	47	78	64
number many one	-31	-41	-53
number none many	17	34	16
number none one	-12	-14	-24
number one many	-15	-36	-9
number one one			10
opens COP		-9	-5
opens DET	23	44	23
opens Nidiom		6	6
opens OPR		-9	-6
opens PREP	-54	-64	-47
opens PRON	-14	-27	-16
opens Q0	12	27	9
opens Qcount	-8	-15	-8
opens Qlength		-8
opens Qpack	6	9	9
opens Qtime			-7
opens Qweight	-6	-6	-11
opens Vmoveb	-16	-19	-22
opens Vmovei	-5	-5	-5
opens Vmovep	-13	-8	-10
opens Vmoves	-6	-9	-7
opens Votheri	11	7	6
opens Vreturnb			9
opens Vsayb	-10	-15	-10
opens Vsaypp		-9
opens Vworkb	-56	-61	-46
opens Vworkbp	-8	-7	-13
opens Vworkbpp		-6
opens Vworki		-7
opens Vworkpp	20	18	27
opens Vworks	11	6	14
opens tarea	34	54	6
opens tdefect	-37	-28	-29
opens tdefect's	6	6	6
opens tdefectVmeasures	-7
opens tdefectVotherb	6	18	21
opens tdefectVotheri	-25	-25	-25
opens tdefectVotherp	-6	-13
opens tdefectVotherpp		-6
opens tdefectVworkbpp		5	10
opens tdefectVworkp	-8	-9	-15
opens tdefectVworkpp	-15	-23	-21
opens tfinish	-36	-11	-18
opens tfixture	86	66	57
opens tfixture's	45	21	32
opens tfixtureVworkb	5	11	10
opens tfixtureVworks	6		11
opens tmaterial	19	49	28
opens tmaterial's	27
opens tmaterialVotherb		14	7
opens tmaterialVworkb	10	14
opens tmaterialVworki	39	30	33
opens tmaterialVworks		5	12
opens tpart	81	75	80
opens tpart's	27	37	34
opens tpartVotherb	15	7	8
opens tpartVworkb	6	26	15
opens tpartVworki		7	11
opens tpartVworks	14	14	9
opens trole	-26	-34	-33
opens tsurface	31	19	13
opens tsurface's		-22	-25
opens tsurfaceVotherb	-12
opens tsurfaceVworkb	8	16
opens tsurfaceVworki			6
opens tsurfaceVworks	-8	-22
opens ttool		-13	-9
opens ttoolVworkb	-9	-13	-13
opens ttoolVworks	-9	-8
opens twork		-12	5
opens w	-63	-38	-32
opens w's	-46	-56	-47
opens wed	-15	-13	-13
opens wing		7	7
opens wly	-12	-19	-13
opens-with +1	25	13	13
opens-with -1	-18	-9	-9
opens-with -3	6
opens-with -4	-11	-5	-5
opens-with here-after	23	12	12
order before far+here	6	24	-6
order before here	26	21	58
order before pair	12		34
order behind far+here	11	13	21
order behind far+phrase	11	14	20
order behind here	-23	-19	-52
order behind pair	10	43	-10
order behind phrase	-22	-28	-38
outside 0 lacks none 0			-5
outside 0 lacks none 1	39	54	45
outside 0 lacks none 2	36	30	29
outside 0 lacks none 3	24	20	16
outside 0 lacks points 0	8	12	13
outside 0 lacks points 1	-32	-33	-34
outside 0 lacks points 2	-9		-11
outside 0 lacks points 3	-11	-15	-19
outside 1 lacks none 0	26	24	28
outside 1 lacks none 1			-6
outside 1 lacks none 2	-10	-12	-16
outside 1 lacks none 3	-10	-9	-25
outside 1 lacks points 0	-8		-33
outside 1 lacks points 1	-11	-11	-13
outside 1 lacks points 2		-5	6
outside 2 lacks none 0	-10
outside 2 lacks none 1	-15	-7	-13
outside 2 lacks none 2			7
outside 2 lacks none 3		14	21
outside 2 lacks points 0		-6
outside 2 lacks points 1	26	8	24
outside 2 lacks points 2	11	10
outside 2 lacks points 3	5		8
outside 3 lacks none 0		6
outside 3 lacks none 1	-5	-28	-31
outside 3 lacks none 2	-16	-21	-21
outside 3 lacks none 3	-24	-27	-14
outside 3 lacks points 0	11	13	18
outside 3 lacks points 1	7	21	18
outside 3 lacks points 2		7	6
outside 3 lacks points 3			5
outside 4 lacks none 0	-14	-27	-21
outside 4 lacks none 1	-39	-30	-41
outside 4 lacks none 2	-31	-9	-14
outside 4 lacks none 3	15
outside 4 lacks points 0		-7	8
outside 4 lacks points 1	5	11
outside 4 lacks points 2	-6	-13
outside 4 lacks points 3	7	15	7
pair by a	-5	-20
pair by about	-6
pair by across	11	6	6
pair by after	9
pair by again	-5
pair by all	-19	-21	-18
pair by along	6	13	17
pair by an	-27	-17	-15
pair by and	-32	-19	-19
pair by another	7	8	8
pair by are	13	7	25
pair by around	20	21	22
pair by as		-5	-8
pair by at	21		8
pair by back	-10	-20	-7
pair by bad	-5
pair by be	7	14	9
pair by been		-6	-7
pair by before	-23	-29	-18
pair by behind	12	7	18
pair by between	-12	-7	-7
pair by box	8
pair by by	-14		7
pair by came	-7	-7	-10
pair by can	8
pair by come	16	16	12
pair by comes	-6
pair by done	-10	-9	-11
pair by down	-17	-15	-17
pair by dry	7	5	5
pair by each	-7
pair by em	8	9	7
pair by every	-10	-12	-8
pair by except	11	9	9
pair by finished	-6
pair by first	-7
pair by for	7
pair by from	-13	-23	-5
pair by front		6	6
pair by full	-9
pair by get	-7	-9	-6
pair by goes	10	16	9
pair by gone	15	12	12
pair by got		26	8
pair by gotta	8	8	8
pair by had	-11	-11	-10
pair by hang	-8	-8	-8
pair by has	19	16	21
pair by have	12
pair by her	10	9	6
pair by his	-8
pair by house	7	6	6
pair by i	7	6	7
pair by in	17		-10
pair by into	-11	-9	-14
pair by is	-21	-9	-8
pair by it	-64	-49	-43
pair by landed	6
pair by left	7	-10
pair by like	-26	-21	-20
pair by low	-26	-14	-14
pair by mark	35	13	23
pair by more	-7	-10	-6
pair by move	6
pair by my		-9
pair by need		5
pair by needs	18	15	11
pair by never	-10	-5	-5
pair by no	-13	-12	-12
pair by not	-7		-6
pair by now	6
pair by number	13		17
pair by of	-6	16	11
pair by off	13		7
pair by old			9
pair by on	40	25	35
pair by one's	-16	-11	-11
pair by ones	-6
pair by or		-8
pair by out	-22	-21	-18
pair by over	-14	-19	-24
pair by past	-10	-6	-6
pair by please	6	6	6
pair by pulled	7
pair by put	-7
pair by quantity	-51	-86	-63
pair by right	-7
pair by round	-6	-5	-5
pair by run	-14	-7
pair by running	-9	-7	-7
pair by set	-10
pair by short	6
pair by since		-5	-5
pair by sit	-5
pair by size	-9
pair by so	-6
pair by some		-6	-6
pair by still	20	27	16
pair by term	-51	-33	-38
pair by than	-13		-6
pair by that	38	24	22
pair by the	31	33	40
pair by them	6
pair by they	6
pair by thick	-9	-5	-5
pair by through			5
pair by time		-10
pair by to	-37	-24
pair by under	16	5	13
pair by up	-27	-18	-13
pair by used	-9	-6	-6
pair by wants		8
pair by was	-12	-14
pair by we	-6	-7
pair by went	-7	-9
pair by were	-8
pair by where	-12		-6
pair by which	-5	-5
pair by will		-6
pair by with	-39	-45	-36
pair by x	-9	-9	-13
pair by you	-12	-11	-9
pair false		26	15
pair true		-16	-7
part +1 bare	9	8
part +1 object	-25		-9
part +1 opens	-27	-15	-31
part +1 subject	-26	-28	-21
part +1 subject-late	12	-14	-8
part -1 bare		-8	-26
part -1 object	32	34	30
part -1 opens		15	13
part -1 subject	23	15	37
part -1 subject-late	-22	-14	-20
part -2 bare	-24		-27
part -2 object	13	-14	-18
part -2 opens	23	10	24
part -2 subject		15	25
part -2 subject-late	16	20	17
part -3 bare	-20	-14	-13
part -3 object	-7	-26	-33
part -3 opens	14		-7
part -3 subject		10
part -3 subject-late	25	27	38
part -4 bare		-6	13
part -4 object	-17	-11	-24
part -4 opens	27	28	30
part -4 subject		-24	-29
part -4 subject-late	-27	-13
part bare	-36	-26	-45
part bare area	-7	16	16
part bare defect	-36	-33	-39
part bare fixture		5	-6
part bare material	-9	7	-14
part bare part	-5		-18
part bare surface		-15	-12
part bare tells	18	11	13
part bare tool	-9		-11
part bare verbish	20	10	25
part bare word	-14	-25	-6
part bare work		-7
part here-after object	-33	-11	-11
part here-after opens	5	-10	16
part here-after subject	30	14
part here-after subject-late		9	-9
part here-before bare		-5
part here-before object	-21		10
part here-before opens		-12	-17
part here-before subject	24	11	35
part here-before subject-late	21	24
part object	-57	-28	-50
part object area	8	-20	-6
part object defect	-21		28
part object finish	-17	-9	-19
part object fixture	38	7	27
part object material			-27
part object part	57	46	40
part object size	6
part object surface	-46	11	-7
part object tells	-21	-6	6
part object tool	7		7
part object verbish	-33	-41	-50
part object word	-50	-16	-56
part object work	-9	-18	-8
part opens	49	25	35
part opens area	10	-8
part opens defect	8
part opens finish	-14	-15	-10
part opens fixture	11	12
part opens material	11		23
part opens part	10	14	27
part opens size	-8	-5	-16
part opens surface	18	17	7
part opens tells		-8
part opens tool	-19	-17	-17
part opens verbish	16	22	13
part opens word		8
part opens work		6	7
part subject	49	18	49
part subject area	16	12	-21
part subject defect	-11	-8	-6
part subject finish	-10	-7	-7
part subject fixture	40	44	54
part subject material	22	16	6
part subject size	-10	-10	10
part subject surface	15	7	17
part subject tells	-13	-17	-7
part subject verbish	-17	-18	-18
part subject word	14	-15	20
part subject-late	22	36	16
part subject-late area	-24
part subject-late defect	13	7
part subject-late fixture	-40	-18	-32
part subject-late material	21	21	32
part subject-late part		12
part subject-late surface	33	7	5
part subject-late tool	8
part subject-late word	17	23
person	-17	-17	-11
phrase behind	-22	-26	-40
phrase behind far	11	14	20
phrase nouns 0	-21	-24	-41
phrase nouns 1			6
phrase nouns 2	12	15	20
phrase opens all			-12
phrase opens anything		-5
phrase opens at	-8	-13	-10
phrase opens back		-5	-5
phrase opens for		-10
phrase opens from		-7
phrase opens is		-8
phrase opens it	-14	-27	-16
phrase opens me	5	11	5
phrase opens new	8	15	8
phrase opens nothing	9	21
phrase opens number		-7
phrase opens out	-5	-10	-5
phrase opens quantity		10	-14
phrase opens round		9
phrase opens term		-5
phrase opens that		-6	-8
phrase opens the	18	24	30
phrase opens them		-6
phrase opens to	-9	-10	-16
phrase opens with	9	13	16
phrase opens yet		-8
phrase points it 0	-23	-39	-32
phrase points it 1		9
phrase points it 2			8
phrase points nothing 0	-6	6	-25
phrase points nothing 1	6		18
phrase points nothing 2	9	15	13
phrase points one 0	-6	-19
phrase points one 1		7
phrase points that 0	9	18	8
phrase points that 1		-11
phrase points them 0			9
phrase size 0	7	15
phrase size 1	-8	-15	-9
phrase size 2	-13	-22	-17
phrase size 4	6	14	5
phrase size 5	8	15	9
phrase size 7			-5
phrase subject owed	7	14	7
phrase subject past	-8	-12	-13
points both -2			5
points both -4	5	5
points both opens	-7	-7	-7
points both subject	9	14	13
points em +1			-6
points em -1	6	6	13
points em -2	-22	-34	-32
points em -3	6	15
points em -4	8	15	10
points em bare	-9	-14	-12
points em object	10	18	13
points em subject		-6	-5
points em subject-late			-6
points it +1	-9	-22
points it -1	-12	-23	-14
points it -2			13
points it -3			9
points it -4	-6	-6	-12
points it bare	-21	-47	-15
points it here-after	-25	-30	-47
points it here-before	15	15	31
points it object	-16	-33	-14
points it opens	6	21
points it subject-late		-8	13
points none +1	-13	-7	-37
points none -1	15	22	25
points none -2	-10	-14	-18
points none -3	-7	-7	-17
points none -4			-7
points none bare		18	-6
points none here-after	6		16
points none here-before	11	18	15
points none object	-9		-32
points none opens			12
points none subject	6	-5	25
points none subject-late		5	-13
points one +1	8	16	9
points one -1	7	10	13
points one -2	10		30
points one -3	-17	-19	-32
points one -4	6	14
points one here-before			-10
points one object	-15	-21	-25
points one opens	13	21	18
points one subject		-10	7
points one subject-late	14	23	18
points that +1		-10
points that -1	14	28	15
points that -2		18	-8
points that -3			10
points that -4	-19	-40	-17
points that bare	-8	-8	-16
points that here-after	28	45	39
points that here-before	-18	-33	-21
points that object		5	8
points that opens	-20	-39	-20
points that subject	27	47	36
points that subject-late		6
points them +1	-6	-7	-10
points them -1	9	15	13
points them -2		7
points them -3		7
points them -4	-9	-20	-6
points them bare		7
points them here-after		10
points them here-before	-5		-10
points them object	8	14	10
points them opens	-7	-14	-7
points them subject	-6		-13
points they +1	5	11
points they -1	7	12	8
points they -2	10	20	10
points they -3		-5	-6
points they -4	-5	-21	-5
points they bare	7	14	7
points they here-after	-12	-22	-16
points they here-before	11	22	11
points they object	6		16
points they opens	9	18	9
points they subject	-6	-9	-8
points they subject-late	-6	-10	-6
points this -2	6	11	6
points this -3		-8
points this object		6
points this opens		5
points this subject	-6	-12	-6
points those -1	-19	-24	-19
points those -3		6	7
points those -4	10	19	11
points those bare		6
points those here-after			8
points those here-before		10
points those object		12
points those subject	-15	-28	-18
points those subject-late	6	17	6
prep about	-6
prep above	10		13
prep across	9
prep after	-8	-14	-8
prep along	-6	-9
prep around	10	9	9
prep at	-35	-38	-50
prep before	-10	-20	-7
prep behind	-11	-15	-20
prep below	-8	-8	-7
prep between	-6	-8	-5
prep by	-95	-76	-91
prep down	12	12	-10
prep for	-19		-20
prep from	-37	-50	-51
prep here-after after		-9
prep here-after around	5	5	7
prep here-after at		-7	6
prep here-after before		-8
prep here-after below	-7
prep here-after by	-26	-24	-18
prep here-after for	-14		-6
prep here-after from	-8	-7	-5
prep here-after in	30	7
prep here-after into	-5	-5	-5
prep here-after near	-10
prep here-after of	37	21	30
prep here-after off	8		10
prep here-after on	26	16	27
prep here-after over	20	7	5
prep here-after past	-14	-7	-7
prep here-after through	19	10	10
prep here-after to	-9	20	13
prep here-after under	13	6	6
prep here-after with	-26	-8	-32
prep here-before at	13	9	7
prep here-before behind	7
prep here-before by	-26	-10	-12
prep here-before of	5	5
prep here-before to	14	16	11
prep here-before under	9
prep here-before with	12	7	7
prep in		-10	-14
prep inside	6
prep into	-14	-9	-14
prep near	-11	-12	-11
prep next		9
prep of	29	14	19
prep off	37	20	25
prep on	10	9	-10
prep other above	9		19
prep other across	9
prep other after		-5
prep other along	-6	-11
prep other at	-54	-43	-67
prep other before	-7	-15
prep other behind	-18	-23	-23
prep other between	-16	-15	-11
prep other by	-46	-47	-66
prep other down	9	10	-12
prep other for	-6	-14	-15
prep other from	-30	-47	-49
prep other in	-35	-17	-20
prep other near		-7	-5
prep other of	-10	-10	-10
prep other off	29	17	14
prep other on	-13		-38
prep other out	-10	-11	-12
prep other over	-38	-29	-38
prep other past		-6	-6
prep other to	-59	-55	-53
prep other toward	-7
prep other under	-12	-26	-23
prep other up		19	17
prep other with	-31	-46	-41
prep out	-19	-17	-18
prep over	-15	-21	-29
prep past	-19	-13	-14
prep through	17	8	8
prep to	-49	-10	-20
prep toward	-6
prep under	11	-17	-11
prep up	5	24	19
prep with	-45	-43	-65
rank after 0	30
rank after 1	-12		-10
rank after 2	-27	-26	-16
rank after 3	-51	-21	-38
rank before 0	71	-14
rank before 1	-24
rank before 2	-37		-6
rank before 3	-28	-11	-8
rank before 4	74	91	70
rule			51
rule done/copula	23	23	46
rule done/none	12	12	23
rule done/past			10
rule follow-up/imperative		-7
rule follow-up/modal		-6
rule follow-up/none	-6	-13	-6
rule follow-up/owed		6
rule lacks none 0	-10	-12	-5
rule lacks none 1	26	16	61
rule lacks none 2	8	15	12
rule lacks none 3	-21	-12	-14
rule lacks points 0	-9	-18	-9
rule problem/amiss	5
rule problem/defect	-8
rule problem/defect-after	-16	-8	-8
rule size 1	-33	-18	-17
rule size 2	-10	-28	-14
rule size 3			8
rule size 4	36	30	61
rule size 5	15	11	15
rule word 		-6
rule word 2			9
rule word at	-5	-10
rule word back	6
rule word bag			-8
rule word block	5	6	5
rule word box			9
rule word coat	6		14
rule word come		-7
rule word corner	-7
rule word door	6
rule word finish			10
rule word first	13	10	24
rule word floor	7
rule word for		8	6
rule word four			8
rule word go		-6
rule word guy		-5
rule word heat	5	5	11
rule word in			-8
rule word install	30	30	61
rule word mat			9
rule word mudroom	6	6	6
rule word old			8
rule word on	9	9	18
rule word one	9	8	19
rule word put			-7
rule word quarter		5
rule word round	6	9	6
rule word send		6
rule word set			6
rule word shelf	9	8	8
rule word side	-6		-6
rule word six			6
rule word soffit	-6
rule word take			9
rule word tile	8	5	10
rule word with		-5	-9
says copula	-9	15	-15
says imperative	30		34
says its verb	-43	-72	-58
says modal	-28		-12
says none	14		-6
says owed	21	34	9
says past	16	7
says present	-13	-29	6
sentences -1	-77	-100	-62
sentences -1 bare	-49	-48	-52
sentences -1 object	9		20
sentences -1 opens	-19	-33	-12
sentences -1 subject	-30	-27	-26
sentences -1 subject-late		-8
sentences -2	-83	-87	-104
sentences -2 bare	-28	-34	-33
sentences -2 object	-25	-32	-29
sentences -2 opens	-26	-36	-41
sentences -2 subject	-24	-16	-20
sentences -2 subject-late		15
sentences 1	-49	-40	-40
sentences 1 bare	-10	-6
sentences 1 object	-18	-15	-13
sentences 1 opens	-10	-6	-8
sentences 1 subject	-11	-8	-10
sentences 1 subject-late	-7	-10	-9
size 1	-63	-56	-68
size 1 far	-20	5	-6
size 1 far+here		-15
size 1 here	-43	-34	-39
size 1 outside 0	-26	-22	-18
size 1 outside 1	-41	-30	-34
size 1 pair	-6	-15	-7
size 1 phrase			6
size 1 told	-5	-7	-9
size 2	14	-13	-8
size 2 far		-31	-19
size 2 far+here			-24
size 2 far+phrase	-22	-33	-34
size 2 here	22	9	9
size 2 outside 0	-10	-19	-12
size 2 outside 1		-9	-20
size 2 outside 2	-15	-31	-36
size 2 pair	-30	-15
size 2 phrase	-12	-14	-21
size 2 told	6	16
size 3		19
size 3 far		18	-6
size 3 far+here	-13	-14	11
size 3 here	23	11	22
size 3 outside 0	31	29	25
size 3 outside 1	13	5
size 3 outside 2	-22	-10	18
size 3 outside 3	-21	-13	-38
size 3 pair	20	27	30
size 3 phrase	-11	-12	-21
size 3 told	-16	-19	-29
size 4	47	31	5
size 4 far	-9	-31	-15
size 4 far+here	24	16	-13
size 4 far+phrase	-15	-16	-29
size 4 here	28	15	17
size 4 outside 0	33	58	38
size 4 outside 1	16	10	-17
size 4 outside 2	38	29	37
size 4 outside 3	-32	-59	-64
size 4 outside 4			11
size 4 pair	21	42	34
size 4 phrase	-7	-8	-13
size 4 told	16	21	29
size 5	27	31	46
size 5 far	22		12
size 5 far+here	-22	10	12
size 5 far+phrase	8	-6	30
size 5 outside 0	37	36	8
size 5 outside 2		14	26
size 5 outside 3	-8	7	39
size 5 outside 4	5	-22	-21
size 5 pair	24	21	-5
size 5 phrase	10	17	13
size 5 told			-5
size 6	15	33	17
size 6 far			-11
size 6 far+phrase	27	52	31
size 6 outside 1			6
size 6 outside 2	13	25	14
size 6 outside 3	51	47	40
size 6 outside 4	-53	-35	-40
size 6 told	-11	-21	-11
size 7			10
size 7 far	-18	-16	-18
size 7 far+phrase	16	24	25
size 7 outside 3	6	6	17
size 7 outside 4	-8		-11
size 7 pair			7
size 7 phrase			-6
size 7 told		-6
sort CONJ			12
sort COP	-9	-18	-9
sort DET	25	52	22
sort OPR			7
sort PREP	-18
sort PRON			-14
sort SUB	13	24	14
sort Vbuyb		-5
sort Vhaveb		-9
sort Vmeasurei	-9	-10	-11
sort Vmeasurepp		-7
sort Vmoveb	-15	-12	-20
sort Vmovei		-7
sort Vmovep	-7	-5
sort Vmovepp	-8	5
sort Vneedb		-5
sort Vneeds	-11	-7	-7
sort Votherb		6
sort Votheri	11	7	7
sort Votherpp	7
sort Vreturnb	6		9
sort Vsayb	-23	-16	-15
sort Vsaypp	-6	-11	-6
sort Vseeb		-5
sort Vworkb	16	58	43
sort Vworkbp	7
sort Vworkbpp			6
sort Vworki	9	8	18
sort Vworkpp	10	15	12
sort Vworks	5
sort w		-20	-14
sort w's	-34	-41	-39
sort wed	-8	-8
sort wing	-16	-14	-14
sort wly	-17	-24	-19
stands after	-38	-85	-86
stands after 0 of 0	-8	-27	-26
stands after 0 of 1		-20	-27
stands after 0 of 2	-17	-12
stands after 0 of 3	-19	-14	-13
stands after 1 of 0	-13	-18	-15
stands after 1 of 1		12
stands after 1 of 2	-9	-11	-8
stands after 1 of 3	26	13	13
stands after has 0	-23	-48	-43
stands after has 1		-11	-26
stands after has 2	-24	-20	-9
stands after has 3	5
stands after points it	-22	-36	-31
stands after points it's			13
stands after points nothing		-27	-37
stands after points one		8
stands after points that		-8	-5
stands after points them			-7
stands after points they	-5	-9	-5
stands before	8	31	23
stands before 0 of 0	27	22	46
stands before 0 of 1	-8	-27	-35
stands before 0 of 2	-36	-59	-46
stands before 0 of 3	-42	-24	-36
stands before 1 of 0		15	25
stands before 1 of 1	-16	-33	-37
stands before 1 of 2			-7
stands before 1 of 3	-16	-9	-13
stands before 2 of 0		18
stands before 2 of 1	-6	-17	13
stands before 2 of 2	-20	-7	-23
stands before 2 of 3			7
stands before 3 of 0	32	44	27
stands before 3 of 1	-38	-51	-37
stands before 3 of 2			14
stands before 3 of 3	-13		-7
stands before 4 of 0	-32	-52	-46
stands before 4 of 1	34	86	51
stands before 4 of 2	37	54	50
stands before 4 of 3	62	36	45
stands before has 0	34	50	54
stands before has 1	-19	-17	-28
stands before has 2	-11
stands before has 3	9	6	5
stands before points both		11
stands before points em		8
stands before points it		-22	15
stands before points it's	-14	-19	-20
stands before points nothing	-20		-20
stands before points one	9	15	12
stands before points that	11	19	13
stands before points that's	6	12	11
stands before points them	8	8	13
stands before points they're	10	14	10
stands before points those		15	-7
stands here	39	44	36
stands here 0 of 1	21	39	21
stands here 0 of 2	48		32
stands here 0 of 3	90	41	32
stands here 1 of 2	-17	18
stands here 1 of 3	7		22
stands here 2 of 3	-44	-25	-19
stands here 3 of 3	-74	-33	-52
stands here 4 of 3	-6
stands here has 1	21	39	21
stands here has 2	32	19	31
stands here has 3	-8	-11	-11
stands here points both			6
stands here points em			6
stands here points it	-12	-22	-12
stands here points it's	12	22
stands here points nothing	45	48	41
stands here points one		-11
stands here points that		-11
stands here points that's		6
stands here points them			-12
stands here points they	5	10	5
stands here points those			9
stands-off-after	18	9	9
subject none +1	-8
subject none -2	17	9	9
subject none -4	11	6	6
subject none here-after	-8
subject none here-before	16	8	8
subject own -1	20	10	10
subject own -2	-7
subject own -3	11	5	5
subject own here-after	-38	-19	-19
subject own here-before	29	15	15
subject person +1	-14	-7	-7
subject person -1	13	6	6
subject person -3	-12	-6	-6
subject person here-after	8
subject pointer +1	-9
subject pointer -2	7
subject pointer -3	17	8	8
subject pointer -4	-13	-6	-6
subject pointer here-after	30	15	15
subject pointer here-before	-32	-16	-16
subject tells -3	11	5	5
subject tells here-before	-8
told as done after	-6	-12	-6
told as done before	-16	-32	-16
told as done here	-5	-10	-5
told as fixed after	-11	-16	-16
told as fixed before	11	-8	40
told as fixed here	-7	-11	-9
told as have before	25	49	32
told as have here	10	16	9
told as need after	-5
told as need before	-28	-37	-40
told as need here	14	36	17
told as open after	-26	-38	-41
told as open before	-16		-60
told as open here	11	18	14
told as ordered before		10
told as used after	29	26	16
told as used before	-28	-31	-18
told as used here	19	7	10
told done	-6	-12	-6
told done 0 near	-10	-20	-10
told done 0 touches		6
told done 1 far	7	14	7
told done 1 near	-6	-12	-6
told fixed far	-16	-22	-26
told fixed near	7	14	7
told fixed over			-10
told open far		-7	8
told open near		12
told open touches	-5	-8	-8
told problem	-7	-7	-15
told problem 0 far	-5	-6	-9
told problem 0 near	14	31	11
told problem 0 over			-10
told problem 0 touches	-8	-13	-13
told problem 1 far	-9	-21
told problem 1 near		-7
told size 1		-9	-5
told size 2	7	17
told size 3	-16	-20	-30
told size 4		-8	6
touches-after	-28	-14	-14
touches-before	30	15	15
unit none area	10	5	5
unit none defect	-40	-20	-20
unit none finish	-32	-16	-16
unit none fixture	31	16	16
unit none material	36	18	18
unit none part	27	14	14
unit none surface	5
unit none tells	-23	-12	-12
unit none verbish	7
unit none word	-15	-7	-7
use buy	18	25	27
use have	24		33
use measure	-27	-40	-28
use move	-23	-9
use need	34	36	19
use other	14		9
use say	-38	-8	-13
use see	13	22
use use			-6
use work	-13	-9	7
verb behind #	24	36	35
verb behind a	7	16	6
verb behind all			-9
verb behind and	-5	-5	-10
verb behind are			6
verb behind be	14	28	14
verb behind before		10
verb behind both			-7
verb behind can	7	14	7
verb behind come		6
verb behind don't		10
verb behind get	12	25	12
verb behind gotta	-11	-21	-11
verb behind he	-6	-8	-8
verb behind i	-5	-17
verb behind i'd	-6	-12	-6
verb behind i'll	6	12	6
verb behind is		-11	6
verb behind it	-9	-17	-11
verb behind it's		-16	9
verb behind must		-8
verb behind no	-8	-10	-14
verb behind nobody	7	13	7
verb behind not	5	10	5
verb behind she		-7	-5
verb behind should	-7	-15	-7
verb behind term	-26	-53	-24
verb behind that		-7
verb behind the	-14	-23	-20
verb behind they	-13	-25	-13
verb behind to	36	72	36
verb behind wants	5	10	5
verb behind was			-9
verb behind we	11	16	18
verb form b main	19	36	19
verb form b side		10	-17
verb form bp main		7
verb form bpp main	-13	-10	-30
verb form bpp side	21	35	30
verb form i main	9	18	9
verb form i side			-9
verb form p main	-10	-16	-15
verb form p side		-14
verb form pp main	17	11	40
verb form pp side	12	9	27
verb form s main	-12	-24	-12
verb form s side	-7	-7	-14
verb lemma ask imperative		5
verb lemma bolt past	-6	-6	-12
verb lemma bring imperative		7
verb lemma call imperative		5
verb lemma call past	-6	-6	-10
verb lemma change present	6	6	8
verb lemma check imperative	5	11	5
verb lemma clean past			9
verb lemma close present	-5	-7	-5
verb lemma come copula	-7	-14	-7
verb lemma cut copula			6
verb lemma cut imperative		11
verb lemma cut none			-5
verb lemma cut owed		6
verb lemma cut past	-8	-7	-18
verb lemma cut present	7	13	7
verb lemma do copula			10
verb lemma do none	-7	-19
verb lemma drill past			-5
verb lemma dry imperative		-8
verb lemma dry none			-7
verb lemma fill imperative		6
verb lemma fill past	6	6	12
verb lemma find past	-6	-6	-6
verb lemma fix past			6
verb lemma get imperative	-10	-21	-10
verb lemma get modal		-9
verb lemma get owed	-11	-21	-11
verb lemma get past		-6
verb lemma glue past			8
verb lemma go copula	-15	-31	-16
verb lemma go modal		-9
verb lemma go none		-6	-7
verb lemma go owed	-14	-29	-14
verb lemma go past	-5		-12
verb lemma go present	-6	-12	-6
verb lemma hang copula	9	9	16
verb lemma hang past	6	6	12
verb lemma hold past	-9	-9	-19
verb lemma keep imperative		-6
verb lemma lay past			-6
verb lemma leave imperative	-16	-31	-16
verb lemma leave past	-9	-16	-12
verb lemma level copula	-7	-7	-13
verb lemma level past	-8	-8	-15
verb lemma lift past			6
verb lemma look imperative	6	13	6
verb lemma look modal		8
verb lemma look present	7	13	7
verb lemma make imperative		-6
verb lemma make present		-6
verb lemma measure past			6
verb lemma miss none	-6	-11	-6
verb lemma move past	-6	-6	-9
verb lemma nail past	5	5	10
verb lemma open present	-11	-19	-11
verb lemma order past		-8
verb lemma pack past			6
verb lemma paint imperative		5
verb lemma paint modal		5
verb lemma pass past			7
verb lemma patch past			6
verb lemma pull past	-5	-5	-10
verb lemma pull present	-5	-5	-5
verb lemma put imperative		-10
verb lemma put none	-6	-10	-9
verb lemma put past	-8	-6	-17
verb lemma redo imperative		6
verb lemma replace past			9
verb lemma roll past			6
verb lemma run past	-9	-13	-14
verb lemma sand modal	6	12	6
verb lemma screw copula	-5	-5	-12
verb lemma screw past			-7
verb lemma seal past			6
verb lemma send imperative		6
verb lemma set copula			8
verb lemma set none	6	6	12
verb lemma shut past			6
verb lemma sister past	5	5	10
verb lemma start present		7
verb lemma stick past			-6
verb lemma swap imperative		6
verb lemma take imperative	5	11	5
verb lemma take past	-6	-6	-10
verb lemma take present	5	9	5
verb lemma tell past		-8
verb lemma test past			5
verb lemma top past			-7
verb lemma touch present	-5	-10	-5
verb lemma use past			-5
verb main	15	24	19
verb main imperative	24	47	27
verb main modal	7	16	6
verb main owed			5
verb main past	-22	-51	-20
verb main present		8
verb no rule	30	44	47
verb none	-84	-121	-131
verb none of 0	-6		-18
verb none of 1	-44	-68	-63
verb none of 2	-28	-43	-42
verb none of 3	-5	-8	-7
verb none turn	-21	-32	-32
verb nth 0	26	31	49
verb nth 0 of 1	32	49	49
verb nth 0 of 2	-5	-17
verb nth 0 of 4		5	7
verb nth 1		15	-15
verb nth 1 of 2		9	-7
verb nth 1 of 3			-10
verb nth 2		9
verb nth 2 of 3		8
verb nth 3			-5
verb of rule	16	30	19
verb of rule do		-9
verb of rule install		-9
verb of rule send	22	44	22
verb other rule	-33	-51	-50
verb particle	-24	-26	-50
verb same rule	48	83	62
verb says ask	9	17	9
verb says buy	-5	-9	-5
verb says call	5	10	6
verb says change	8	14	11
verb says check	12	23	14
verb says clean			7
verb says clear			8
verb says cut		19	-7
verb says cut in	7	11	9
verb says cut out	-7		-16
verb says decide		6
verb says dig out	6	6	6
verb says do	-5	-20
verb says drip			-7
verb says drop		6
verb says dry	-16	-24	-24
verb says file			6
verb says fill	11	16	18
verb says find	-10	-15	-10
verb says finish		8
verb says fit	6	13	7
verb says fix			7
verb says get	-27	-53	-27
verb says give		-6
verb says glue	7	8	12
verb says go	-13	-18	-21
verb says go back	-10	-19	-10
verb says go down		-7
verb says go in	-11	-20	-11
verb says go on		-8
verb says grout	6	9	8
verb says hang	18	22	31
verb says hold	-10	-9	-20
verb says hook up	5	5	5
verb says keep		-8
verb says lay			9
verb says leave	-26	-47	-33
verb says level	-15	-15	-29
verb says lift			7
verb says look	20	39	20
verb says make	-7	-14	-7
verb says measure		7	8
verb says miss	-5	-11	-5
verb says nail	6	6	11
verb says open	-13	-24	-15
verb says pack			5
verb says paint	7	14	6
verb says pass	6	7	10
verb says patch	8	12	12
verb says plane	6	11	7
verb says pull	-10	-12	-19
verb says put		-9
verb says put back	6	6	6
verb says put in	-23	-36	-34
verb says put on		7	5
verb says quote		5
verb says redo	9	13	9
verb says rehang		7	7
verb says replace	9	12	13
verb says reset	10	13	16
verb says return	7	15	6
verb says run			-8
verb says sand	8	13	11
verb says scrape	5	10	6
verb says screw down	-6	-6	-6
verb says scribe		5	6
verb says seal	7	8	14
verb says see		8
verb says send back	8	8	8
verb says set		-7	13
verb says shift		-7
verb says sister	8	9	15
verb says sit		-10
verb says skim		7	5
verb says start	7	14	7
verb says stick	-6	-10	-7
verb says stop		-7
verb says stuff	-6	-6	-6
verb says swap	8	14	10
verb says take			-7
verb says take back	8	15	8
verb says tell		-5
verb says test	12	15	22
verb says top	-9	-10	-18
verb says touch		-8
verb says trip	-8	-8	-8
verb says use			-7
verb says wire			5
verb says work			-5
verb side	13	27	13
verb side copula		-18	14
verb side imperative	10	22	7
verb side owed	9	18	9
verb side past		10	-13
verb term defect	-31	-31	-61
verb term finish	-9	-16	-12
verb term material	18	31	22
verb term part		9
verb term surface	5	10	5
verb turn	14	19	23
verb turn back copula		12
verb turn back none			-9
verb turn back owed	-5	-11	-5
verb turn back past	-8	-7	-17
verb turn back present		-8
verb turn come back	-24	-35	-37
verb turn done copula	-7	-7	-13
verb turn done none			-15
verb turn down copula	8	8	15
verb turn finish	-11		-28
verb turn good copula	-7	-7	-10
verb turn in copula		-7
verb turn in none	6	11	6
verb turn in present	6	13	6
verb turn install	21	38	25
verb turn new copula	-11	-14	-19
verb turn new imperative	12	24	13
verb turn new modal	9	18	9
verb turn new none	29	27	61
verb turn new owed	-25	-49	-25
verb turn new past	23	21	49
verb turn new present	-10	-17	-10
verb turn off copula	-7	-11	-9
verb turn off none			-5
verb turn on copula		14
verb turn out copula		6
verb turn over none		-6
verb turn replace	25	7	71
verb turn take back	6	16
verb turn take off	-7	-8	-14
verb turn take out			-7
verb turn up copula	6	6	13
verb turn up present		-8
verb use measure main	-11	-14	-21
verb use measure side	-11	-16	-16
verb use move main	-55	-103	-63
verb use move side	-24	-43	-30
verb use other main	-23	-46	-23
verb use other side	-17	-30	-21
verb use return main	8	15	8
verb use return side		6
verb use say main	5	12
verb use say side	8	17	8
verb use see main	23	44	26
verb use see side	16	32	16
verb use use main			-7
verb use work main	73	128	95
verb use work side	40	66	55
where +1	-60	-47	-68
where -1	36	41	40
where -2	24	21	19
where -3	15	5	-12
where -4	-17	-21	-13
where here-before	24	20	27
whole after at defect	9
whole after from defect	11	5	5
whole after on defect	-11	-6	-6
whole after quantity defect	-7
whole after quantity material	9
whole after quantity part	-11	-5	-5
whole after quantity word	11	5	5
whole after term finish	-6
whole after term material	12	6	6
whole after term part	10
whole after term surface	5
whole after term word	15	8	8
whole after with defect	-6
whole after word area	7
whole after word fixture	7
whole after word part	9
whole after word verbish	-12	-6	-6
whole after word word	-15	-8	-8
whole article a	-15	30	18
whole article none	-11	-27	-23
whole article other	-18	-32	-21
whole article the	31	36	30
whole behind about -1	5
whole behind about -2	-8
whole behind about -3	-8
whole behind at -1	-10	-5	-5
whole behind at -2	-5
whole behind at -3	-17	-8	-8
whole behind at -4	-9
whole behind at here-before	12	6	6
whole behind behind -2	-5
whole behind behind -3	-7
whole behind behind here-after	-6
whole behind behind here-before	10	5	5
whole behind by -2	-10	-5	-5
whole behind by -4	45	23	23
whole behind by here-after	-7
whole behind by here-before	-11	-5	-5
whole behind down -1	-6
whole behind down -2	-9
whole behind end +1	-5
whole behind end -1	-21	-11	-11
whole behind end -2	-5
whole behind end -4	-43	-21	-21
whole behind end here-after	8
whole behind for -1	19	9	9
whole behind from -2	-12	-6	-6
whole behind from -3	8
whole behind from -4	8
whole behind from here-after	8
whole behind from here-before	8
whole behind in +1	6
whole behind in -2	-19	-9	-9
whole behind in -3	-16	-8	-8
whole behind in here-after	7
whole behind in here-before	7
whole behind mark -1	-9
whole behind mark -2	13	7	7
whole behind mark -3	-6
whole behind mark here-before	12	6	6
whole behind number -3	7
whole behind of -1	20	10	10
whole behind off -3	5
whole behind off -4	15	7	7
whole behind off here-before	-9
whole behind on -1	12	6	6
whole behind on -2	13	7	7
whole behind on -4	10
whole behind on here-after	-7
whole behind out +1	16	8	8
whole behind out -1	-16	-8	-8
whole behind out -2	10
whole behind out -3	6
whole behind out -4	13	6	6
whole behind out here-after	-22	-11	-11
whole behind over -3	-8
whole behind over here-after	8
whole behind quantity +1	-27	-14	-14
whole behind quantity -1	13	6	6
whole behind quantity -2	-20	-10	-10
whole behind quantity -3	-12	-6	-6
whole behind quantity -4	17	9	9
whole behind quantity here-after	7
whole behind quantity here-before	22	11	11
whole behind short -2	-10	-5	-5
whole behind term +1	-5
whole behind term -1	15	7	7
whole behind term -2	-24	-12	-12
whole behind term -3	56	28	28
whole behind term -4	-8
whole behind term here-after	34	17	17
whole behind to -2	-7
whole behind to -3	15	8	8
whole behind up -1	-12	-6	-6
whole behind up -2	17	8	8
whole behind up -3	-7
whole behind with -1	-23	-12	-12
whole behind with -2	6
whole behind with here-after	-7
whole behind word -1	10	5	5
whole behind word -2	41	20	20
whole behind word -3	-30	-15	-15
whole behind word -4	-12	-6	-6
whole behind word here-after	-8
whole behind word here-before	-34	-17	-17
whole behind-verb	9	8
whole between 	15	8	8
whole between has	8
whole between has a	-5
whole between is	-6
whole counted bare	31	40	18
whole counted count	9
whole counted current	-15	-8	-8
whole counted length	-32	-45	-42
whole counted pack	25	20	12
whole does be area	-13	-19	-19
whole does be finish		-6
whole does be fixture	-11	-18	-15
whole does be material		5	-9
whole does be part	-6		-15
whole does be surface	6	14
whole does be tells		-8	-6
whole does be verbish	-11	-12	-21
whole does be word	12	22	15
whole does bring fixture		-7
whole does bring material		7
whole does bring word	6	13	6
whole does change surface	-6	-6	-6
whole does change word	7	13	10
whole does clean part			-6
whole does clean word			8
whole does come fixture		8
whole does come material		9
whole does come size		6
whole does come verbish		6
whole does cut defect	28	48	36
whole does cut fixture		9	6
whole does cut material		9
whole does cut part			8
whole does cut surface	10	8	22
whole does cut verbish	-6	-10	-6
whole does cut word	-6	-11	-6
whole does do area	5	8	5
whole does do fixture	7	21	7
whole does do material	-12	-24	-12
whole does do part		7
whole does do surface		6
whole does do word		-7
whole does drill part			5
whole does drop part	9	9	9
whole does drop word	-8	-8	-8
whole does fill fixture	-6	-6	-6
whole does fill size	6	6	6
whole does fill word			-8
whole does find word		-5
whole does finish material	9	9	14
whole does finish surface			8
whole does fix word			-6
whole does get area	-15	-24	-21
whole does get defect	14	23	18
whole does get fixture	6	10	9
whole does get material	-9	-11	-18
whole does get part	8	17	6
whole does get surface	-10	-14	-15
whole does get verbish		-5
whole does get word			15
whole does give material	-6	-12	-6
whole does go defect		7
whole does go finish		-6
whole does go material	11	19	15
whole does go part	-11	-17	-15
whole does go verbish		-8
whole does go word		-9	-6
whole does hang fixture		9
whole does hang material		-8
whole does hang word		8
whole does have material		8
whole does have part	10	13	10
whole does have surface		-5
whole does i'll word		-7
whole does keep material	5	11	5
whole does leave defect		-7
whole does leave fixture	-5	-8	-5
whole does leave material	20	40	20
whole does leave surface	12	17	12
whole does leave word	-11	-21	-11
whole does let material		12
whole does let surface		-8
whole does let word		-8
whole does look defect		-6
whole does look part		7
whole does make material		-5
whole does move word	5	5	5
whole does need area		-8
whole does need part	10	19	10
whole does need surface	7	14	7
whole does need verbish		-6
whole does order part		7
whole does order word		-5
whole does pack defect	-5	-5	-5
whole does paint material		-9
whole does paint word	6	12	6
whole does patch material		-6
whole does pour material	8	8	8
whole does pull part			-8
whole does pull surface		-5	-9
whole does pull word		-6	-7
whole does put area	6	8	12
whole does put defect	-6	-6	-13
whole does put material			-5
whole does put part	12	7	30
whole does put surface	-11	-15	-17
whole does put word	-17	-25	-28
whole does replace material			-5
whole does rip material		6
whole does run defect	6	6	12
whole does run fixture			9
whole does run surface			-9
whole does run verbish			-6
whole does sand area	7	7	7
whole does sand defect		-7
whole does sand fixture		7
whole does sand word		-9	-5
whole does say surface		-7
whole does scrape material			5
whole does screw material			7
whole does seal material	-6	-6	-9
whole does see part	5	11	5
whole does see word	6	12	6
whole does send material	-7	-13	-7
whole does send surface	-6	-6	-6
whole does send word	5	7	5
whole does set surface	-6	-6	-6
whole does shim material		-6	-7
whole does shim word			6
whole does swap defect	-6	-8	-9
whole does swap material		8	7
whole does swap part	6	13
whole does swap word			-10
whole does take defect	-6	-9	-10
whole does take fixture			11
whole does take material	-8	-10	-15
whole does take part	5	5	8
whole does take surface	-5	-10
whole does take word		8
whole does tape part	-6	-6	-7
whole does tape surface	5	5	5
whole does touch word	6	11	6
whole does wait material		9
whole does wait surface		-8
whole does want defect	-9	-17	-9
whole does want fixture	9	18	9
whole does want material	-10	-20	-10
whole does want part	-8	-17	-8
whole does want verbish	5	11	5
whole does want word	8	16	8
whole ends Nlabel	12	-14
whole ends Q0	-22	-17	-20
whole ends Vmoveb	19	18	8
whole ends Vmovep	-9	-7
whole ends Vmoves	-6	-6	-6
whole ends Vneedb	-7	-9	-5
whole ends Vneeds		-10	-5
whole ends Votherb	-13	-6
whole ends Votheri		-7
whole ends Vothers	-5	-5	-5
whole ends Vworkb	10		-6
whole ends Vworkbp	26	16	18
whole ends Vworkpp	-6	-7	-6
whole ends Vworks	13	23	21
whole ends plain	17	27	13
whole ends tarea	22	9	-12
whole ends tarea's	-11
whole ends tdefect		-10	-6
whole ends tdefectVotherb	17	41	50
whole ends tdefectVotheri	-16	-25	-25
whole ends tdefectVotherp	-9	-8	-6
whole ends tdefectVotherpp	-13	-15	-14
whole ends tdefectVothers		-8
whole ends tdefectVworkbpp	5	9	8
whole ends tdefectVworki	-6	-8	-8
whole ends tdefectVworkp	-5	-9	-5
whole ends tdefectVworkpp	-9	-7	-7
whole ends tdefectVworks		10
whole ends tfinish	-41	-31	-30
whole ends tfinishVworkb		10
whole ends tfixture	17	24	25
whole ends tfixture's	22	6
whole ends tfixtureVworkb	-17	-9	-8
whole ends tmaterial	6	10	41
whole ends tmaterial's	30	48	15
whole ends tmaterialVworkb		-6	-11
whole ends tmaterialVworki	12	25	8
whole ends tmaterialVworks	-19	-33	-29
whole ends tpart	21	13	12
whole ends tpart's	-5	22	13
whole ends tpartVotherb	-9		-6
whole ends tpartVothers	-5	-13	-6
whole ends tpartVworkb	16	17	23
whole ends tpartVworki	-5	-5	-5
whole ends tpartVworks	18	14	9
whole ends tsurface	11	14	29
whole ends tsurface's		7	-6
whole ends tsurfaceVotherb	-8	-11	-8
whole ends tsurfaceVworkb	-13	-22	-7
whole ends tsurfaceVworki	17	20
whole ends ttool	13	-8	-8
whole ends ttool's	15	17	10
whole ends ttoolVworkb	-5
whole ends ttoolVworks	-17	-14	-12
whole ends twork		20	7
whole ends verb	-27	-18	-11
whole ends w		-9
whole ends w's	-13	-8
whole ends wed	8	-7
whole ends wing	-36	-19	-25
whole far after 0	-15	-14
whole far after 1	58	38	38
whole far after 13+	-26	-19	-13
whole far after 2	-14	-6	-8
whole far after 3-4	-17	-25	-13
whole far after 5-7	17	14
whole far after 8-12	-40	-30	-41
whole far before 0	38	32	20
whole far before 1	17	-7	-16
whole far before 13+	-42
whole far before 2	36
whole far before 3-4	20	24	18
whole far before 5-7	-6		18
whole far before 8-12	-15
whole figure-between	33	17	17
whole flawed	-22	17	53
whole frame copula +1		-6
whole frame copula -1	-30	7	-43
whole frame copula -2		-13	-23
whole frame copula -3	-15	-21	-33
whole frame copula -4	-39	-44	-35
whole frame copula area	-7		-16
whole frame copula defect		-10
whole frame copula finish	-7	-10	-10
whole frame copula fixture	8	19
whole frame copula here-after	-38	-25	-9
whole frame copula here-before			7
whole frame copula material	-18	-29	-26
whole frame copula part	-10	-6	-24
whole frame copula size		-6
whole frame copula surface	-7	-9	-13
whole frame copula tool		-8	-6
whole frame copula verbish			-7
whole frame copula word		-13
whole frame imperative +1		-9
whole frame imperative -1	11	13	13
whole frame imperative -2	-6	-9	-7
whole frame imperative -3	-9	-11	-9
whole frame imperative -4	-11	-11
whole frame imperative area		-6	-6
whole frame imperative defect	15	23	24
whole frame imperative finish	7	12	7
whole frame imperative fixture		8
whole frame imperative here-after	11	14	11
whole frame imperative here-before	11	14	8
whole frame imperative material	7	16
whole frame imperative part	-8	-21
whole frame imperative size			7
whole frame imperative surface	-8	-17	-6
whole frame imperative tells	9	18	9
whole frame imperative tool		-8
whole frame imperative word	-18	-33	-21
whole frame modal +1	-8	-7	-5
whole frame modal -1	24	22	12
whole frame modal -3	5	18	8
whole frame modal area	9	16	9
whole frame modal defect		6
whole frame modal finish	-5	-9	-5
whole frame modal here-after	7
whole frame modal here-before		-13	-5
whole frame modal material		5
whole frame modal part		10
whole frame modal size	-5	-10	-5
whole frame modal surface		-8
whole frame modal word		9
whole frame none +1	-10	6
whole frame none -1	9	14	38
whole frame none -2		20	13
whole frame none -3	26	17	22
whole frame none -4	13		8
whole frame none area		-8	8
whole frame none defect		-13
whole frame none finish	15	27	19
whole frame none fixture	-11	-34
whole frame none here-after	6	-21
whole frame none here-before	8	16	8
whole frame none material	6		16
whole frame none part	7	17	6
whole frame none surface	27	36	47
whole frame none tells		-10	-5
whole frame none tool	5	20
whole frame none verbish	-6	-10	-8
whole frame none word	8	20	6
whole frame owed -2	-10		-9
whole frame owed -3	7	17	8
whole frame owed -4	11	25	12
whole frame owed area	13	26	13
whole frame owed defect		-9
whole frame owed finish	-5	-11	-5
whole frame owed here-after	6	10	6
whole frame owed here-before	10	8	6
whole frame owed material	-8	-17	-8
whole frame owed part	5	11	5
whole frame owed surface	12	25	12
whole frame owed tells		-5
whole frame owed tool		9
whole frame owed word	5	11	5
whole frame past +1	-13	-31	-32
whole frame past -1	11	8	16
whole frame past -2	13	10	27
whole frame past -3		-7
whole frame past -4		-16	-23
whole frame past area	-17	-22	-30
whole frame past defect		-5
whole frame past finish			-14
whole frame past fixture	17	29	24
whole frame past here-after	15	11	-5
whole frame past material	7	21
whole frame past part	15	15	31
whole frame past size	-8	-14	-11
whole frame past tells			8
whole frame past tool	-12	-19	-16
whole frame past verbish	-17	-22	-29
whole frame past word	-15	-33	-13
whole frame present +1	-12	11
whole frame present -1	6		11
whole frame present -2		18	9
whole frame present -3	-15	-26	-16
whole frame present -4			-8
whole frame present area		-7
whole frame present finish	-6	-11	-9
whole frame present here-after	9	14	9
whole frame present here-before	7
whole frame present material	15	24	22
whole frame present part	7	9	11
whole frame present size		8
whole frame present surface	-11	-15	-19
whole frame present tool		-5
whole frame present verbish	12	16	20
whole head accent wall	10	10	10
whole head apartment	-10	-10	-10
whole head b	13	20	22
whole head back door	-8	-6	-9
whole head back room	8	8	8
whole head backsplash		12
whole head bad	-6	-7
whole head balusters		5
whole head bar	-11	-7	-9
whole head base		15	8
whole head baseboard		7
whole head basement		-6
whole head bath		7
whole head bath fan	10
whole head bathroom		-10
whole head batt	-13	-7	-7
whole head batts	-7	-7	-7
whole head bay		-10	-7
whole head bed	28	11	17
whole head bedroom	-8	-8	-9
whole head bedroom 2	-12	-7	-7
whole head bedrooms	-10
whole head bench	7
whole head bit	-6	-11	-6
whole head black	-6	-9	-6
whole head blade	-6
whole head bled		-6
whole head blinds	15	10	11
whole head block		13	5
whole head blocking	-6	-6	-6
whole head blue tape	-9	-5	-5
whole head board	10	5	12
whole head boards	58	58	41
whole head bolts			7
whole head boot	5	5	5
whole head box			7
whole head boxes	8	7	8
whole head brackets	6
whole head breaker	-11	-9
whole head brick	-8	-6	-6
whole head broken	-7	-5
whole head bubble	5	6	6
whole head bucket	-10	-9	-9
whole head bulb	-11	-6	-6
whole head button	-7	-6	-6
whole head cabinet	-10	7
whole head cabinet doors	8	8	8
whole head cable		-17	-14
whole head card	-6
whole head carpet	-8	-13
whole head casing		8	11
whole head caulk		6
whole head ceiling	84	57	39
whole head ceiling's		10	6
whole head cement board	7	7	7
whole head chain		5	12
whole head chair rail	-6	-6	-6
whole head chimney	17	20	12
whole head chip	-9	11
whole head circuit			8
whole head clamps	-14	-13	-11
whole head clear		10
whole head clips			6
whole head closer	-6
whole head closet	31	15	12
whole head closet rod	10	6	6
whole head coat	15		5
whole head column	10	10	10
whole head concrete		8
whole head condensate line	10	10	10
whole head cord	-10		-8
whole head corner	-34	-41	-35
whole head corners			6
whole head cornice	6
whole head corridor	6
whole head counter	15	29	7
whole head cove base	-5
whole head cover	17	21	9
whole head crack	6	10	34
whole head crooked		6	5
whole head crown in	8	8	8
whole head crown's	5	11	7
whole head curb		-5
whole head cut		-5
whole head cut out	-15	-21	-11
whole head damper	-7
whole head deck	6		12
whole head delivery	6	6	6
whole head dimmer		6
whole head dining room	39	22	15
whole head door	19	23	17
whole head door's	-7
whole head doors	6	10
whole head downspout		-7	-6
whole head drain	10
whole head drain line	11	11	11
whole head drawer front	9
whole head drawing	11	9	9
whole head drip	13	6	5
whole head drop		7	9
whole head drops		-11	-5
whole head dry	15	16	8
whole head drywall	-7	-7	-5
whole head duct	-12	-18	-10
whole head due		-8
whole head duplex	-16	-9	-9
whole head edge		5	6
whole head elbow	7	8	8
whole head end panel		-12	-11
whole head ends		-7
whole head entry	6	6	8
whole head epoxy	-13	-11	-8
whole head everywhere	-9	-9	-9
whole head except	-16	-18	-12
whole head face	7		11
whole head factory	-5	-5	-5
whole head fall	-7	-7	-5
whole head falls	-15	-9	-9
whole head fan		-16
whole head fascia		8
whole head faucet	-13	-6	-8
whole head faucet's	-6	-6	-6
whole head fell off	-7	-7	-7
whole head fence	-8	-14	-8
whole head filters	21	15	15
whole head fireplace		5
whole head first coat	-12		-12
whole head flange	10		-9
whole head flashing		-7
whole head flat	-10	-14	-11
whole head flex	15		5
whole head flight	7	7	7
whole head float		6	6
whole head floor	37	32	46
whole head floor's	18	10	6
whole head foam	-8	-7	-8
whole head footing	16	8	8
whole head frame	15	24	14
whole head free	-6
whole head fridge	7
whole head front	-10	-16	-11
whole head front door	11	9	23
whole head front edge	-8	-8	-8
whole head full	9
whole head furnace	-6
whole head gable	10	6	6
whole head gap	-8	-11	-8
whole head garage	-8	-10
whole head garden	-8	-8	-8
whole head gasket	-10	-5	-10
whole head gate	-10		-5
whole head gauge	-6
whole head glass	9	13	7
whole head glue		-20	-11
whole head glue's	-9	-9	-9
whole head go	-15	-8	-8
whole head goes	-7	-7	-5
whole head gone	-5
whole head gray	-8	-6	-5
whole head grille	28	19	19
whole head grout	-5	-7
whole head grout haze	6	6	6
whole head guest room	20	8	8
whole head gutter		7	7
whole head gutters	13	13	13
whole head hall	19	17	13
whole head hallway	-7	-5	-5
whole head handrail	8	7	6
whole head handrail bracket	13	9	9
whole head hatch	33	12	24
whole head head	37	27	18
whole head header		9
whole head hearth	10	10	10
whole head heater	11
whole head height	-5		-8
whole head herringbone	-6	-6	-6
whole head high spot	-7	-7	-7
whole head hinge			7
whole head hinges		12
whole head hole	5	17	10
whole head hole's	-8	-7	-7
whole head holes	14	18	8
whole head hollow	6	6	17
whole head honeycomb	6	6	6
whole head hook		5	5
whole head hose	8		7
whole head hose bib	-8	-15	-7
whole head hot	18	18	22
whole head hot side	-6
whole head house		-8
whole head insulation			6
whole head island		12	6
whole head itself	10	23	12
whole head j-box	-7	-7	-7
whole head jambs	6	6	6
whole head job	9	15	5
whole head joint	13	9	18
whole head joist	-12	-10	-8
whole head joists	-10	-19	-9
whole head key			6
whole head keypad	6	6	6
whole head keys	11	5	6
whole head kit	-6	-6
whole head kitchen	-19	-13	-22
whole head kitchen faucet	-17	-8	-8
whole head knobs	12	11	11
whole head ladder	10
whole head lags	11	5	5
whole head laminate	-15	-26	-15
whole head landing	11	14	7
whole head latch	-11	-7	-9
whole head laundry	9	8	8
whole head layers	-12	-7	-7
whole head leak	7	11	5
whole head lean	-6
whole head leg	-11	-10	-10
whole head legs	-13	-17	-11
whole head let go			-6
whole head level	-9	-11	-10
whole head lid		9	12
whole head light	-9	-29	-22
whole head light's	-6
whole head lights	14	11	11
whole head line	7
whole head linen closet	10	10	10
whole head living room	-6
whole head lock		-8
whole head loo	-7	-7	-7
whole head loop	6	6	6
whole head loose		11
whole head low spot	8	8	8
whole head lvl	-9	-9	-9
whole head main	14	7	7
whole head marble	15	7	7
whole head mastic	-6
whole head meantime			-6
whole head mesh		-8
whole head meter		-9
whole head microwave	-7	-7	-7
whole head mirror	18	12	11
whole head missing		-7	-8
whole head miter	10	9	9
whole head mold	19	13	13
whole head mosaic	-9	-9	-9
whole head mud		5
whole head mudroom	9	9	9
whole head nail		6
whole head nail plates		5
whole head needs		-6
whole head neutral	11	10	10
whole head nice	-6		-5
whole head no hot	-5	-5	-5
whole head noise	15	7	7
whole head north	6	6	6
whole head number		7
whole head nursery	6	6	6
whole head nut	8	12	7
whole head oak		6	16
whole head open	25	20	15
whole head opening		-8	-9
whole head outlet	21	16	22
whole head outlets	18	10	14
whole head outside		7	7
whole head outta	-9	-9	-9
whole head paint	-13	-21	-11
whole head pair	-6	-5	-5
whole head pan	-15	-12	-10
whole head panel	-25	-20	-14
whole head panel's	-9	-6	-6
whole head panels	7
whole head pantry	-8	-5	-7
whole head paper	-8	-7
whole head part	7	7	7
whole head patch		6
whole head pendant	-7	-7	-7
whole head piece		7
whole head pipe	7	9
whole head place	-7	-7	-13
whole head plain	13	13	13
whole head plank	12	12	12
whole head planks	10	10	10
whole head plaster	7	5
whole head plate	-16	-12	-9
whole head plates	14	10	8
whole head pocket door	5
whole head porch	-12	-6	-6
whole head post	6	9	9
whole head posts	5		6
whole head powder room	12	8	9
whole head primer	7
whole head pulls	21	17	11
whole head putty	-6	-12	-6
whole head r	-9		-6
whole head rack	-9	-6	-6
whole head radiator		-7
whole head rain	-5	-8	-7
whole head range hood	6	6	6
whole head ray		-9
whole head re	5	10	5
whole head reducer	13	21	13
whole head register	-10	-9	-9
whole head reveal	-6
whole head reveal's	-9	-9	-9
whole head ridge	-5	-5	-5
whole head rim joist	9	9	9
whole head ring	-11	-8	-7
whole head rise	6
whole head riser	-9	-10	-6
whole head rm	40	20	18
whole head rock	-19	-13	-7
whole head rocks	-17	-18	-12
whole head roller	-7
whole head roof	21	18	27
whole head round	-10	-15	-13
whole head row	-7	-8	-7
whole head rubber	7	7	7
whole head run	26	16	18
whole head runner	9	9	9
whole head runs	7	14	6
whole head s			7
whole head sagging			-6
whole head salon	-13	-8	-11
whole head sand	-12	-15	-10
whole head sash	-7
whole head saw	-9	-5	-5
whole head screw			-9
whole head screwdriver	-6
whole head screws	-15	-22	-26
whole head sealant		-8
whole head seam			13
whole head seat's	-6	-6	-6
whole head second coat	-13	-20	-7
whole head sheathing	8	6	6
whole head shed	10
whole head sheets	5	5	5
whole head shelf	-7
whole head shellac	6	6	6
whole head shelves	-5
whole head shoe			6
whole head shop	-32	-20	-18
whole head shot	-9	-8	-8
whole head shower	22	21	21
whole head shower pan	6	6	6
whole head shutoff	5	5	5
whole head side	-38	-42	-38
whole head sides	-16	-12	-11
whole head siding	10	18	10
whole head sill		7	6
whole head size		-6
whole head skirting		11	5
whole head skirting's	-5	-5	-5
whole head slab	27	29	31
whole head slider	19	23	14
whole head slides	-10	-7	-7
whole head slope	-7	-5	-5
whole head smoke	31	21	21
whole head smoke alarms	9	9	9
whole head smoke detector	-6	-6	-6
whole head smokes	7	7	7
whole head snug	5
whole head socket	15	13	13
whole head soffit	10
whole head soft	12	23	12
whole head soft close	6
whole head spare	6
whole head spindles	23	23	23
whole head spins	17	12	12
whole head split	5	9	8
whole head spot	-15	-15
whole head stain	-6	12
whole head stair	-12	-9	-9
whole head stairs	-30	-27	-23
whole head staple	6	6	6
whole head steel	-14	-7	-8
whole head step	-7
whole head steps	-9	-12	-7
whole head stile	7	7	7
whole head stone's	-6	-6	-6
whole head stop		-5
whole head store	11
whole head stove	-12	-11	-14
whole head strip	-6	-5
whole head stud			-5
whole head studs	-13	-13	-10
whole head subfloor	9	7	7
whole head sunroom	5	5	5
whole head sweep	-10	-10	-8
whole head switch	17	11	11
whole head t	17	9	9
whole head tailpiece	-6	-6	-6
whole head tap	-11
whole head tee	-6		-6
whole head thermostat	16	23	13
whole head threshold	18	15	13
whole head tile	29	29	23
whole head tile's		9
whole head toe kick	-5
whole head toilet	7	12	12
whole head too high		-8
whole head top	11
whole head towel bar's	10	10	10
whole head track	-21	-14	-15
whole head trap	10	10	17
whole head travelers	-6
whole head tray	10	18	12
whole head treads		5
whole head trim	19	23	13
whole head truck		6
whole head tub spout			7
whole head tub's			6
whole head unit	-15	-12	-12
whole head uppers	-8	-10	-9
whole head upstairs	6	8	6
whole head upstairs bath	-5	-5	-5
whole head upstairs hall	7	7	7
whole head valve	-11	-27	-13
whole head vanity	-8	-6	-10
whole head vent	17	12	10
whole head wainscot	-5	-5	-5
whole head wall		-14	-19
whole head wall's	9	8	5
whole head wallpaper	6	6	6
whole head walls	-33	-28	-35
whole head want	-6	-5	-5
whole head wants	7
whole head wasp nest	19	19	19
whole head waste	8
whole head water	-28	-29	-44
whole head water line	6	6	6
whole head water's	-14	-11	-11
whole head wax ring	-26	-8	-8
whole head wet			8
whole head white	-9	-12	-8
whole head whoever	-8	-12	-7
whole head window		-17	-13
whole head windows	-6
whole head wire	15	15	15
whole head wood	-9	-16	-9
whole heading	31	26	21
whole heading +1	-13	-21	-21
whole heading -1	19		9
whole heading -2	-30		-16
whole heading -3	26	15	23
whole heading -4	12	20	7
whole heading here-after	14		16
whole is-flaw	-12	-6	-6
whole kind +1 area	-9	-5	-9
whole kind +1 finish		-5
whole kind +1 material	-30	-18	-15
whole kind +1 part	8
whole kind +1 surface	-10		-12
whole kind +1 tells	-6
whole kind +1 verbish	-7	-5	-6
whole kind +1 word	7	10	13
whole kind -1 area		-26	-15
whole kind -1 defect		26	12
whole kind -1 finish	-10	7	-7
whole kind -1 fixture	21	37	26
whole kind -1 material	12		5
whole kind -1 part	9	19	29
whole kind -1 size	-9
whole kind -1 surface	-10	-5
whole kind -1 tells	8		7
whole kind -1 tool	21
whole kind -1 verbish	18	25
whole kind -1 word	-37	-19	-9
whole kind -2 area		6
whole kind -2 defect			18
whole kind -2 finish	10		13
whole kind -2 fixture	11	14	-10
whole kind -2 material	-32	-23	-24
whole kind -2 part			-8
whole kind -2 size	10		13
whole kind -2 surface	12		19
whole kind -2 tells	-11		-7
whole kind -2 tool	-16	-10	-11
whole kind -2 verbish		-7	-9
whole kind -2 word	24	39	21
whole kind -2 work		10
whole kind -3 area	19	10	-8
whole kind -3 defect	-26	-37	-27
whole kind -3 finish		15
whole kind -3 fixture	22	7	18
whole kind -3 material		16	6
whole kind -3 part	-13	-28	-9
whole kind -3 size	-10	-11	-14
whole kind -3 surface	19		24
whole kind -3 verbish		7
whole kind -3 word	-14		-18
whole kind -4 area		19	10
whole kind -4 defect	6
whole kind -4 finish	-9	-14	-10
whole kind -4 fixture	-48	-48	-32
whole kind -4 material	17	19	17
whole kind -4 part	13	6	-10
whole kind -4 size	-18	-20	-13
whole kind -4 surface		11
whole kind -4 tells	-9	-8	-8
whole kind -4 tool	6
whole kind -4 verbish	16		15
whole kind -4 word	-7	-25	-21
whole kind area	9		-12
whole kind defect	-32	-22
whole kind finish	-19	-6	-21
whole kind fixture	33	29	32
whole kind here-after area		-9
whole kind here-after defect	-36	-21	-17
whole kind here-after finish	-16	-14	-23
whole kind here-after fixture	18	15	18
whole kind here-after material	32	35	15
whole kind here-after part	32	38	26
whole kind here-after size	-8
whole kind here-after surface			15
whole kind here-after tells	9	7	8
whole kind here-after verbish	-24	-24	-13
whole kind here-after word		-41	-12
whole kind here-before area		10	9
whole kind here-before defect	20	9	13
whole kind here-before finish	9
whole kind here-before fixture			11
whole kind here-before material	16		15
whole kind here-before part	-10	11	11
whole kind here-before size	20	10	8
whole kind here-before surface		9	-15
whole kind here-before tells	-9
whole kind here-before tool		10
whole kind here-before verbish	-23	-22	-19
whole kind here-before word		-11
whole kind material	18	24	16
whole kind part	28	35	31
whole kind size	-11	-23	-11
whole kind surface	18	13	24
whole kind tells	-18	-9	-7
whole kind tool	8		-19
whole kind verbish	-17	-17	-24
whole kind word	-28	-34	-22
whole kind work		19	5
whole lead a -1	25	13	13
whole lead a -2	-5
whole lead a -3	-26	-13	-13
whole lead a -4	9
whole lead a here-after	5
whole lead a here-before	-9
whole lead area -2	7
whole lead fixture -1	-8
whole lead fixture -2	-16	-8	-8
whole lead fixture -3	22	11	11
whole lead fixture -4	-37	-19	-19
whole lead material -1	-53	-26	-26
whole lead material -2	-42	-21	-21
whole lead material -3	9
whole lead material -4	-37	-18	-18
whole lead material here-before	15	8	8
whole lead number -3	15	7	7
whole lead number -4	11	6	6
whole lead number here-after	-5
whole lead on here-before	7
whole lead part -1	-7
whole lead part -2	-21	-10	-10
whole lead part -3	-30	-15	-15
whole lead part -4	-13	-7	-7
whole lead part here-before	-7
whole lead quantity -1	5
whole lead quantity -2	-22	-11	-11
whole lead quantity -3	15	7	7
whole lead quantity -4	20	10	10
whole lead quantity here-after	-15	-7	-7
whole lead quantity here-before	21	10	10
whole lead role here-after	6
whole lead size -1	-7
whole lead surface -1	-16	-8	-8
whole lead surface -2	8
whole lead surface -4	-5
whole lead surface here-before	7
whole lead that -1	5
whole lead that -4	16	8	8
whole lead that here-before	5
whole lead the -2	-9
whole lead the -4	-7
whole lead the here-after	26	13	13
whole lead the here-before	-13	-6	-6
whole lead tool -1	-7
whole lead tool -4	13	6	6
whole lead verbish -1	-9
whole lead verbish -2	17	8	8
whole lead verbish here-after	-28	-14	-14
whole lead verbish here-before	-7
whole lead with -2	17	8	8
whole lead with -3	-7
whole lead with -4	-5
whole lead word -1	25	12	12
whole lead word -3	28	14	14
whole lead word here-before	8
whole lemma be object	-21	-10	-10
whole lemma be subject	-14	-7	-7
whole lemma find object	5
whole lemma get object	-12	-6	-6
whole lemma get subject	-19	-9	-9
whole lemma have subject	9
whole lemma keep subject	-12	-6	-6
whole lemma leave object	13	7	7
whole lemma trip subject	8
whole number many many	32	61	36
whole number many one	-37	-65	-47
whole number none many	7	18
whole number none one		-10
whole number one many			-13
whole number one one	16	21	27
whole opens PREP	-21	-18	-23
whole opens Vmoveb	16	13	9
whole opens Votherb	-5
whole opens Votheri	-5
whole opens Votherpp	8	8	8
whole opens Vothers	-5	-5	-5
whole opens Vworkb	-59	-43	-30
whole opens Vworkbp	-6	-8	-5
whole opens Vworkbpp		5
whole opens Vworkpp	-20	-18	-11
whole opens Vworks	6	6	13
whole opens tarea	28	8	19
whole opens tarea's		6
whole opens tdefect	-39	-35	-23
whole opens tdefectVotherb	-12	13	14
whole opens tdefectVotheri	-17	-28	-22
whole opens tdefectVotherp	-10	-10	-7
whole opens tdefectVotherpp	-13	-15	-14
whole opens tdefectVothers		-10
whole opens tdefectVworkbpp		6
whole opens tdefectVworki	-6	-8	-8
whole opens tdefectVworkpp	-10	-8	-8
whole opens tdefectVworks		10
whole opens tfinish	-28	-32	-27
whole opens tfinishVworkb		12	6
whole opens tfinishVworkpp	-6	-6
whole opens tfixture	60	46	54
whole opens tfixture's	46	25	30
whole opens tfixtureVworkb	-20	-11	-10
whole opens tmaterial	43	44	36
whole opens tmaterial's	40	37	15
whole opens tmaterialVotherb	9	9	16
whole opens tmaterialVworki	22	42	15
whole opens tmaterialVworks		-12	-23
whole opens tpart	57	47	70
whole opens tpart's	8	30	14
whole opens tpartVothers		-7
whole opens tpartVworkb	16	-12	19
whole opens tpartVworks		18	9
whole opens trole	-21	-13	-16
whole opens trole's	-13	-8	-13
whole opens tsurface	8		5
whole opens tsurface's	-18	-28	-15
whole opens tsurfaceVotherb		-5
whole opens tsurfaceVworkb	-18	-9	-20
whole opens tsurfaceVworki	10	18	14
whole opens tsurfaceVworks		7	5
whole opens ttool	-5	-33	-22
whole opens ttool's	10	5
whole opens ttoolVworkb		5
whole opens ttoolVworks	-15	-13	-11
whole opens twork		15
whole opens w	-8	-11	-38
whole opens w's	-23	-16	-8
whole opens wed		-12
whole opens wing	-13	-24	-23
whole opens-with +1	15	7	7
whole opens-with -1	41	20	20
whole opens-with -2	23	11	11
whole opens-with -4	30	15	15
whole opens-with here-after	33	17	17
whole part +1 bare	23	16	14
whole part +1 object	-51	-24	-32
whole part +1 opens	-36	-15	-15
whole part +1 subject	16	-9	-7
whole part +1 subject-late	-8	-11	-10
whole part -1 bare	-12
whole part -1 object	44
whole part -1 opens		12
whole part -1 subject	8	45	37
whole part -1 subject-late	-27
whole part -2 bare	12	27	-10
whole part -2 object	-21	-12
whole part -2 opens			6
whole part -2 subject	13	8	17
whole part -2 subject-late		11
whole part -3 bare			-5
whole part -3 object		9
whole part -3 opens		-25	7
whole part -3 subject	-21	-20	-24
whole part -3 subject-late	23	26	12
whole part -4 bare	-16	-38	-26
whole part -4 object	-24	-20
whole part -4 opens	36	41	15
whole part -4 subject	-25	-33	-30
whole part -4 subject-late		-10	-8
whole part bare	-23	-14	-53
whole part bare area	-12	-16	-21
whole part bare defect	-40	-37	-40
whole part bare finish	17	18
whole part bare fixture	-21	-23	-12
whole part bare material	-8	-13	-19
whole part bare part	18	10	9
whole part bare size		12	14
whole part bare surface		7
whole part bare tool		-5	-6
whole part bare verbish	15	10	9
whole part bare word	-15	6
whole part bare work	7	16	8
whole part here-after bare	-28	-21	-21
whole part here-after object	7	21
whole part here-after opens	29		20
whole part here-after subject	13	18	25
whole part here-after subject-late	-5	-14	-6
whole part here-before bare	-5
whole part here-before object	-9	14
whole part here-before opens	13	19	16
whole part here-before subject	37	18	28
whole part here-before subject-late	-9	-15	-6
whole part object	-30	-17	-28
whole part object area	31	6	19
whole part object defect		22	22
whole part object finish	-36	-15	-20
whole part object fixture	-20	-11	-8
whole part object material	9	7
whole part object part	16	16	21
whole part object size	10	10
whole part object surface	25	-14	-18
whole part object tells	-15
whole part object tool	-6	-6	-11
whole part object verbish	-11	-7	-12
whole part object word	-54	-26	-30
whole part opens	33	19	43
whole part opens area	-7		-12
whole part opens defect			12
whole part opens fixture	56	53	54
whole part opens material	14		12
whole part opens part			-13
whole part opens size	-6	-14	-7
whole part opens surface	-7	29	51
whole part opens tells	-8	-10	-8
whole part opens tool			-8
whole part opens verbish	-18	-13	-18
whole part opens word		-38	-21
whole part opens work		5
whole part subject	30	26	41
whole part subject area		11
whole part subject defect		-16
whole part subject fixture	15	13	12
whole part subject material			7
whole part subject part	-10		-7
whole part subject size	-15	-29	-18
whole part subject surface		23	10
whole part subject tells	6
whole part subject tool	20	18	12
whole part subject verbish		-14	-5
whole part subject word	35	27	33
whole part subject-late	-20	-7	-8
whole part subject-late area	-5		-6
whole part subject-late finish	-6
whole part subject-late fixture		-6	-17
whole part subject-late material	5	38	16
whole part subject-late part		17	26
whole part subject-late surface	-8	-31	-14
whole part subject-late tool	-11	-6	-6
whole part subject-late verbish		6
whole part subject-late word		-12	-11
whole person	-24	-20	-27
whole points both -2	-6	-6	-10
whole points both -3			10
whole points both opens	6	6	11
whole points both subject	-7	-7	-12
whole points em -1		5
whole points em -2	-6	-11	-8
whole points em -3		10
whole points em -4		-12
whole points em bare	-5	-5	-7
whole points em object	7	9	13
whole points em subject		-6	-9
whole points it +1	-7	-10	-10
whole points it -1			14
whole points it -2		-9	-6
whole points it -3	7	14	7
whole points it -4		5
whole points it bare	-7	-5	-16
whole points it here-after		-5	-8
whole points it here-before		-11
whole points it object	-17	-26	-25
whole points it opens	12	19	16
whole points it subject	19	11	49
whole points it subject-late	-18	-20	-37
whole points none +1		10
whole points none -1			13
whole points none -2	-6		-22
whole points none -4	-18	-24	-31
whole points none bare		11	-16
whole points none here-after	11	9	25
whole points none here-before	11	11	22
whole points none object			-16
whole points none opens	10		32
whole points none subject	6	10	5
whole points none subject-late	-8	-19
whole points one +1		-7	-8
whole points one -1	24	44	29
whole points one -2		-13
whole points one -3		-6
whole points one -4	9	15	12
whole points one bare	-11	-18	-15
whole points one here-after	-9	-13	-13
whole points one here-before			-11
whole points one object			6
whole points one opens		6	-10
whole points one subject	11	23	9
whole points one subject-late	10	10	21
whole points that +1		-7
whole points that -2	23	38	32
whole points that -3	-9	-16	-12
whole points that -4	-16	-29	-18
whole points that bare	-12	-21	-16
whole points that here-before	12	24	12
whole points that object			-7
whole points that opens		-7
whole points that subject	9	12	14
whole points that subject-late	15	23	22
whole points them -3		5
whole points them -4		-5	-5
whole points them object	6	10	9
whole points them subject			-17
whole points them subject-late	-5	-8	-5
whole points they -1	7	16	7
whole points they -2	9	17	9
whole points they -3		-8
whole points they -4	-11	-23	-11
whole points they bare	10	19	10
whole points they object	-6	-10	-8
whole points this -2	11	16	11
whole points this -4		6
whole points this object	7	13	7
whole points those -1	7	12	7
whole points those -2			9
whole points those -3	-8	-14	-8
whole points those -4		7
whole points those bare	7	15	7
whole points those object	6	7	11
whole points those opens		-5
whole points those subject	-12	-27	-12
whole points those subject-late		9
whole prep about		-9
whole prep above	-12	-9
whole prep after	-5	-6
whole prep along		-13	-10
whole prep around	-10	-9	-11
whole prep at	-46	-40	-57
whole prep behind	12	7	12
whole prep by	-55	-76	-72
whole prep down	-5
whole prep from	-46	-48	-44
whole prep here-after by	-6
whole prep here-after for	-5	-12	-5
whole prep here-after from	-6
whole prep here-after in	-8	-20	-14
whole prep here-after of		9
whole prep here-after off	-8	-8	-8
whole prep here-after on	8
whole prep here-after to	5	10	6
whole prep here-after with			-6
whole prep here-before in	-12	-6	-8
whole prep here-before on	-14	-6	-6
whole prep here-before with	-10
whole prep in	-29	-50	-21
whole prep inside	9	9	9
whole prep into			-9
whole prep near		-10	-5
whole prep next	8	8	8
whole prep of	-28	-13	-13
whole prep off	-15	-29	-13
whole prep on	-24	-15	-20
whole prep other about		-9
whole prep other above	-12	-9
whole prep other after	-5	-6
whole prep other along		-11	-10
whole prep other around	-9	-9	-10
whole prep other at	-42	-36	-54
whole prep other behind	9	6	11
whole prep other by	-53	-71	-70
whole prep other for	9	17
whole prep other from	-36	-45	-38
whole prep other in	-14	-29
whole prep other inside	8	8	8
whole prep other into			-9
whole prep other near	-9	-13	-8
whole prep other next	8	8	8
whole prep other of	-36	-23	-17
whole prep other off	-8	-20
whole prep other on	-19	-16	-19
whole prep other over	-28	-33	-25
whole prep other through	11	11	20
whole prep other to	-27	-34	-33
whole prep other toward	-8	-10	-6
whole prep other under		-18	-8
whole prep other up		-8
whole prep other with	-52	-48	-41
whole prep over	-29	-35	-26
whole prep through	17	16	23
whole prep to	-23	-25	-27
whole prep toward	-8	-10	-6
whole prep under	7	-16	-6
whole prep up		-7
whole prep with	-66	-49	-52
whole rank after 0	-16	-23	-9
whole rank after 1	14	-9	-7
whole rank after 2	-17
whole rank after 4	-10		-5
whole rank before 0	24	-14	10
whole rank before 1	21	34
whole rank before 2	-10	16	17
whole rank before 3	-6	17	28
whole rank before 4	-5	-13	-31
whole says copula	-8	14	8
whole says imperative	17	-6
whole says modal	-8	-26	-10
whole says none	13	7
whole says owed		17	17
whole says past		-7	-15
whole says present	-11	11	11
whole sentences -1	-136	-112	-91
whole sentences -1 bare	-28	-13	-16
whole sentences -1 object	-47	-48	-34
whole sentences -1 opens	-51	-51	-50
whole sentences -1 subject	-19	6	17
whole sentences -1 subject-late	-15	-31	-27
whole sentences -2	-101	-126	-98
whole sentences -2 bare	-27	-21	-20
whole sentences -2 object	-41	-44	-33
whole sentences -2 opens	-48	-76	-44
whole sentences -2 subject	-8	-7	-17
whole sentences 1	-34	-37	-18
whole sentences 1 object	-7	-6	-5
whole sentences 1 opens	-12	-15	-6
whole sentences 1 subject	-10	-12
whole size 1	-13	-21	-11
whole size 2		17	10
whole size 3	18	23	10
whole sort PREP	-13	-6	-19
whole sort Vmeasureb		-5
whole sort Vmoveb	21	20	10
whole sort Vmovep	-11	-9	-6
whole sort Vmovepp		-6	-5
whole sort Vmoves	-10	-8	-8
whole sort Vneeds		-11	-7
whole sort Votherb	-18	-10	-8
whole sort Votheri	-10	-12	-7
whole sort Votherpp	7	8	8
whole sort Vothers	-6	-6	-6
whole sort Vreturnb	-6	-6
whole sort Vworkb	13
whole sort Vworkbp	23	15	17
whole sort Vworkbpp	-6
whole sort Vworki	-7	-6	-6
whole sort Vworkpp	-40	-35	-26
whole sort Vworks	13	23	21
whole sort w	-20	-37	-46
whole sort w's	-41	-26	-26
whole sort wed	16	-5	7
whole sort wing	-7	-8	-17
whole stands after	-49	-60	-54
whole stands after 0 of 0	-9	-13	-11
whole stands after 0 of 1	-16	-18	-17
whole stands after 0 of 2	-12	-15	-13
whole stands after 0 of 3	-25	-17	-20
whole stands after 1 of 1	-6	-7	-7
whole stands after 1 of 2	-7	-6	-8
whole stands after 1 of 3	18	8	8
whole stands after 2 of 1	5	5	11
whole stands after has 0	-10	-14	-12
whole stands after has 1	-16	-20	-14
whole stands after has 2	-18	-20	-20
whole stands after has 3	-7	-8	-12
whole stands after points it	-5	-6	-10
whole stands after points nothing	-30	-35	-27
whole stands after points one		-6	-7
whole stands before 0 of 1	-11	-21
whole stands before 0 of 2	-20	-41	-52
whole stands before 0 of 3	-19	-42	-14
whole stands before 1 of 0	-11
whole stands before 1 of 1	36		10
whole stands before 1 of 2	16	33	9
whole stands before 1 of 3	6	28
whole stands before 2 of 0		-16
whole stands before 2 of 1	15	19	-12
whole stands before 2 of 2	-13	10	39
whole stands before 2 of 3		15
whole stands before 3 of 0	-6
whole stands before 3 of 1	-19	21
whole stands before 3 of 2	25	13	24
whole stands before 3 of 3	7		21
whole stands before 4 of 0	-21	-18	-37
whole stands before 4 of 2	-20	-10	-10
whole stands before 4 of 3	34	17	17
whole stands before has 0	-36	-37	-36
whole stands before has 1	20	21
whole stands before has 2		9	14
whole stands before has 3	18	9	15
whole stands before points both		-7
whole stands before points em	-8	-10	-14
whole stands before points it's	18	12	12
whole stands before points nothing	-19	-12	-29
whole stands before points one	15	22	23
whole stands before points ones	5	5	5
whole stands before points that		-7	8
whole stands before points them			-12
whole stands before points they're	-6	-13	-6
whole stands before points this	6	11	6
whole stands before points those	8	12	13
whole stands here	30	55	49
whole stands here 0 of 2	15	39	35
whole stands here 0 of 3	88	70	75
whole stands here 1 of 2			-6
whole stands here 1 of 3	-35	-27	-27
whole stands here 2 of 3	-39	-23	-27
whole stands here 3 of 3	-19	-11	-11
whole stands here 4 of 3	-9
whole stands here has 2	18	37	31
whole stands here has 3	14	22	22
whole stands here points both			7
whole stands here points em			5
whole stands here points it	-14	-31	-9
whole stands here points it's	7	12
whole stands here points nothing	29	39	55
whole stands here points one			-12
whole stands here points that	8	17	6
whole stands here points that's		7
whole stands here points they	7	15	7
whole stands here points those	-7	-14	-7
whole stands-off-after	5
whole subject none -1	6
whole subject none -2	-8
whole subject none -3	15	7	7
whole subject none here-after	29	14	14
whole subject none here-before	-8
whole subject own +1	-17	-9	-9
whole subject own -1	-63	-31	-31
whole subject own -2	-32	-16	-16
whole subject own -3	-47	-24	-24
whole subject own -4	-47	-23	-23
whole subject own here-after	-20	-10	-10
whole subject own here-before	29	15	15
whole subject person +1	10
whole subject person -1	-7
whole subject person -2	-11	-6	-6
whole subject person -3	-11	-6	-6
whole subject person here-before	8
whole subject pointer +1	-25	-12	-12
whole subject pointer -1	57	29	29
whole subject pointer -2	31	16	16
whole subject pointer -3	45	23	23
whole subject pointer -4	55	28	28
whole subject pointer here-before	-15	-7	-7
whole subject tells -3	10	5	5
whole told as bought before	-5	-6	-5
whole told as done after		-6
whole told as done before	14	28	14
whole told as done here	8	15	8
whole told as fixed after			6
whole told as fixed before	8		25
whole told as have before	-17		-10
whole told as need before	-49	-79	-54
whole told as need here	6	10	5
whole told as open after	-11	-14	-19
whole told as open before	29	58	31
whole told as open here	9	7	19
whole told as used before	8	-7	-16
whole touches-after	9
whole unit none area	19	9	9
whole unit none defect	-37	-18	-18
whole unit none finish	-15	-8	-8
whole unit none fixture	17	8	8
whole unit none part	15	8	8
whole unit none size	-5
whole unit none surface	9
whole unit none tells	-19	-10	-10
whole unit none tool	25	12	12
whole unit none verbish	-6
whole unit none word	-12	-6	-6
whole unit none work	-14	-7	-7
whole use buy	-9	-7	-9
whole use have	38	48	47
whole use measure			-19
whole use move	-20		10
whole use need	-15		15
whole use other		-13	7
whole use say	-8	-18	-7
whole use see	-13	-14	-14
whole use use	-18	-21	-15
whole use work	10	13
whole where +1	-49	-39	-46
whole where -1	20	43	38
whole where -2	6	23	13
whole where -3		-9	-13
whole where -4	-23	-43	-42
whole where here-after	15		17
whole where here-before	28	30	27
whole word apt	-7	-7	-9
whole word b	9	14	19
whole word baby	7	7	7
whole word back	25	9	10
whole word bad	-9	-9	-6
whole word bath	5
whole word beautiful	-6	-6	-6
whole word bed	22	5	12
whole word bench	8	10	6
whole word big	8
whole word bled		-6
whole word board			5
whole word boards	58	58	41
whole word bottom		16
whole word boxes	8	7	8
whole word br	-6	-7
whole word button	-7	-6	-6
whole word c	-17		-11
whole word card	-8
whole word church	-13	-7	-7
whole word cold	5	8
whole word color		-5	-5
whole word counter	29	51	27
whole word cover	19	26	11
whole word dark	7	7	7
whole word defect	-41	-29
whole word discharge	17	17	17
whole word down	11	6	7
whole word dry	16	17	7
whole word due		-8
whole word ends		-7
whole word everywhere	-9	-9	-9
whole word except	-21	-21	-14
whole word face			6
whole word factory		-8
whole word fella		6
whole word finish	-15	12	-15
whole word first	19	16	10
whole word fl	6	6	6
whole word flight	7	7	7
whole word float		6	6
whole word free	-6
whole word front	11	7
whole word gauge	-7
whole word go	-11	-6	-6
whole word god			7
whole word goes	-10	-9	-7
whole word gone	-7
whole word half	-5
whole word hand		7
whole word head	36	27	18
whole word height	-6		-8
whole word hot			14
whole word house	-13	-14
whole word inside	-5	-5
whole word itself	10	23	12
whole word job	15	18	8
whole word kids	-6	-6	-6
whole word kit	-6	-6
whole word last		-17	-9
whole word layers	-12	-7	-7
whole word lean	-6
whole word left		-5	-5
whole word level	-9	-11	-10
whole word lid	-6
whole word linen	-7
whole word little	11	12	6
whole word loop	6	6	6
whole word lunch	14	14	14
whole word make	13		6
whole word me		-6	-10
whole word meantime			-6
whole word mouse	6	6	6
whole word mr	11	8	14
whole word n	-7		-6
whole word needs		-6
whole word new	-29	-25	-23
whole word north	6	6	6
whole word number		-9	14
whole word oil	6	6	6
whole word old	-30	-7	-14
whole word open	25	20	15
whole word out		14
whole word outta	-9	-9	-9
whole word pair	-6	-5	-5
whole word paper	-14	-11	-8
whole word part	7	7	7
whole word piece		7
whole word place	-9	-8	-14
whole word plain	13	13	13
whole word popcorn	6	6	6
whole word pot	-5	-5	-5
whole word powder	44	23	23
whole word quantity		-13
whole word r	-8		-6
whole word rain	-5	-8	-7
whole word ray	-5	-10	-5
whole word re	9	15	8
whole word rear	-8	-6	-7
whole word return	-6	-6
whole word ring	-12	-8	-7
whole word rise	6
whole word rm	20
whole word room	-11	-11	-11
whole word round	-15	-20	-16
whole word row	-7	-10	-7
whole word rubber	7	8	8
whole word run	23	15	17
whole word runner	9	9	9
whole word s		6	9
whole word same	-6
whole word schluter	6	6	6
whole word scrap	-7
whole word second		-6
whole word sheets	5	5	7
whole word sir	11	5	5
whole word size		-6
whole word slow	6
whole word small	10	6	5
whole word spare	7	6
whole word special	-5	-5	-5
whole word spins	15	11	11
whole word spot	-17	-19
whole word steel	-13	-6	-7
whole word store	11
whole word straight	-9	-12	-8
whole word strip	-6	-5
whole word suite	6
whole word t	17	8	8
whole word table	7	7	7
whole word test		-10
whole word tire	-6	-6	-6
whole word top	7	5
whole word unit	-29	-26	-24
whole word up	-8	-5	-6
whole word waste	8
whole word whoever	-8	-12	-7
whole word zone	-5
word a	12	15	22
word about	-5	-11	-5
word air	-19	-19	-19
word all	-9	-10	-16
word alone	-10	-8
word and	10	11	19
word another		8
word anybody	-14	-24	-14
word anyhow	-5
word anyone	-9	-17	-9
word anything	-11	-23	-12
word anywhere	-5
word arm	7	6	6
word around		6
word aside	-12	-16	-10
word at	-9	-9	-19
word b	-9	-8	-13
word back	15	-9
word backset	9	9	9
word bad	-6
word ball	-6
word bare	-13
word batch	-7	-7	-7
word bead	-5		-14
word bearing	8
word bed	-12	-7	-6
word behind	15	21	23
word bench	21	10	9
word better	-9	-15	-9
word big	-8	-7	-7
word board	30	28	32
word boards	48	48	50
word booked		-8
word both			-8
word bottom		18
word bout	-5	-7
word bowl	10	6	10
word bowls	6	6	6
word box	-15	-7
word boy		-5
word br	-11		-5
word branch	6	6	6
word brkr	-5	-5	-5
word business	-7	-7	-7
word button	-13	-13	-13
word cam	9	9	9
word canopy	5	5	5
word cast	6	6	6
word chk	-8	-8	-8
word clean			8
word cock		-9
word color	-13	-7	-24
word colour	6	7
word count	-7	-12	-9
word counter	9	11	12
word cover			-6
word credit	7	7	7
word crumbs	-5	-5	-5
word ct	-9	-9	-9
word cut	27	30	31
word cycles	-5	-5	-5
word dark	10	8	7
word dave	-6	-10	-6
word deal	-6	-6	-6
word defect	-59	-31	-23
word dentist	-9	-6	-6
word det	6	6	6
word dining		5
word dinner	-7	-6	-6
word dog	-6
word done			6
word down		-10
word due		7
word dust		-6
word earliest	8	14	8
word east	8
word electrical		6
word em		-6	-5
word end	19	8	9
word ends			-7
word exam	10	6	6
word except	-12	-17	-10
word expansion	17	17	17
word extra	-6		-6
word face	-12	-13	-8
word far	-6	-10	-7
word fella	-9	-6	-5
word final	6	8
word finger			8
word finish	-74	-45	-56
word fire		5
word first		-14
word fl	11	11	11
word float	14	6
word fly	-9	-9	-9
word for	-5	-14
word free	-9	-17	-7
word front	10	16	14
word frost	-14	-11	-11
word full		10	5
word furniture		8
word gary	-8	-6	-6
word gauge	-11	-6	-6
word god	8
word going		-7
word good			-8
word guest	7	7	7
word hair	-6	-6	-7
word hand	-15	-34	-14
word hanging	13	12	18
word hard	6	9
word have		-9
word head	-13	-13	-18
word height			10
word home	-12	-20	-12
word horse	8	8	8
word hot	23	24	23
word house	-5	-12
word hvac	-9	-16	-9
word in	-9	-20	-5
word inside	-11
word instead	-6	-13	-7
word is	-8	-17	-8
word it	-19	-29	-29
word it's		9
word itself	6	12	8
word jan	-5	-5	-5
word job	-8	-7	-8
word kick	7	7	7
word kit	13	13	8
word knots	7	7	7
word last	-25	-26	-16
word layers	6		7
word lead	20	17	24
word lean		-7
word led	5	7
word left	-8	6
word length	-33	-53	-44
word level	-14	-12	-16
word lid	18	14	13
word lid's	7	7	7
word list			6
word little	-22	-31	-25
word look		-5
word loop	10	10	19
word lower	7	8	8
word luis			-6
word m		5
word machine			-9
word make	9	9	5
word me	-12	-24	-19
word metal	7	7	6
word middle	-16	-15	-15
word mind		-9
word mine		-6
word mstr	6
word n			-6
word near		12
word new		-13
word nice	-8	-8	-14
word north	6
word now	-6	-6	-7
word nowhere	6
word number	-9	-10
word numbers	5	5	5
word of	15	23	23
word off	-7	-12
word oil		-6
word old	16	-10
word ones			6
word open	9	14
word oscar	-13	-24	-13
word other	-29	-10	-16
word out	-17	-28	-36
word outta	-6
word over	-6	-7
word p	-6	-6	-6
word pack	10	14	17
word pair	10	10	10
word pairs	-6	-6	-6
word paper	16	13	22
word parlor	17	8	7
word part			5
word patch	13	10	11
word people		7
word piece	14	21	16
word place	-5	-7	-7
word play	7	7	7
word please		8
word plumb	5	5	5
word powder	10
word press	9	6	6
word pressure	-7	-7	-13
word problem	6
word profile	5	6	6
word put	-16	-21	-22
word quantity		18
word r	10
word rain	-10	-9	-6
word raw			-9
word ray		-7
word re	-7	-12	-6
word real	-8
word rear	8	10	5
word rec'd	10	10	10
word regulator	13	14	14
word remains	6	6	6
word replacement	7	13	7
word return	6		9
word right		-5
word ring	19	10	18
word rm		6	-6
word road	-5	-5	-5
word roll	8	7
word room	11	8
word roots	-6
word round	-14		-11
word row		-6	-7
word rubber	7	11	16
word run	7
word running	-7
word s	-14	-18	-21
word same	-31	-24	-13
word sample	6	8	6
word say	-9	-9	-9
word scrap	14		9
word seal	6	10	6
word second	15	9	9
word self	9	9	9
word semi	-6	-6	-6
word sheets	6		7
word size	-8	-5
word slide	6
word slow	-9	-7	-10
word sock	6
word some		7
word somewhere	7	9	6
word soon	-6	-7	-7
word spare	-12		-12
word spec	-8	-7	-7
word spin	-9	-6	-6
word spot	-8	13	-7
word start	-6	-12	-6
word steam	7	5
word steel	9	10
word sticker	-7	-7	-7
word stock	8	5
word store	-6
word straight	-7	-5	-8
word street	17	7
word strip			6
word structural	-6	-6	-6
word support	7	7	7
word supposed		-6
word table	13	13	13
word temporary	-6	-6	-6
word that	6	9	8
word the	31	55	38
word them			9
word then		-8
word there	8	17	9
word thing	-8	-11	-8
word third	19
word those			-14
word through			-6
word time	-20	-21	-37
word to	9	19	8
word top		11
word touch	5	10	5
word towel	6	6	6
word tube			8
word tubes	16	16	16
word turn	-6	-6	-6
word twice		-5	-14
word type		6
word under		7	9
word unit	-23	-16	-19
word up		14	7
word upper	10	9	19
word upstand	5	10	5
word us	-5
word v	-9	-9	-9
word volume			5
word wait	12	20	12
word want		-5
word wants	-8	-9	-7
word warm	-7
word waste	7
word wee	6	6	6
word whenever		-11
word whoever	-11	-8	-8
word whole	-7	-7	-8
word wind	-7
word with		-8
word work			-10
word wrong	-14	-11	-12
word x	-9	-9	-17
word you'd	-13	-8	-8
word zone		5	12
`;
