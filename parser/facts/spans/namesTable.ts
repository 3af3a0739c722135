/** Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work. */
export const NAMES = `
after at fixture	-18	-9	-9
after at part	13	7	7
after at surface	13	6	6
after at verbish	14	7	7
after by area	-12	-6	-6
after by defect	14	7	7
after end defect	-21	-11	-11
after from surface	-11	-6	-6
after in area	9
after in defect	-10
after in fixture	10
after in material	6
after in part	9
after in surface	-13	-7	-7
after in word	15	7	7
after number defect	8
after of material	-10
after off material	-8
after off part	8
after off surface	5
after off word	-7
after on defect	-21	-10	-10
after on fixture	6
after on material	7
after on part	-17	-9	-9
after on surface	27	13	13
after on word	-8
after out surface	11	6	6
after quantity area	9
after quantity defect	-9
after quantity material	-8
after quantity size	14	7	7
after quantity word	-14	-7	-7
after term area	13	6	6
after term defect	8
after term finish	-9
after term fixture	25	13	13
after term material	8
after term size	6
after term surface	-18	-9	-9
after term verbish	-6
after term word	10	5	5
after word area	26	13	13
after word defect	-26	-13	-13
after word finish	-12	-6	-6
after word fixture	-16	-8	-8
after word material	22	11	11
after word part	19	9	9
after word size	-16	-8	-8
after word surface	7
after word tells	-10
after word verbish	11	5	5
after word word	-17	-8	-8
article a	-56
article none			-6
article other	15	-9	-17
article the	56	22	30
as ruled all far	-6	23	19
as ruled all far+here		11	22
as ruled all far+phrase	11	16	18
as ruled all here	78	41	55
as ruled all pair	82	55	30
as ruled all phrase		9	-20
as ruled all told	5	16
as ruled none far	-26	-68	-75
as ruled none far+here	-31	-25	-27
as ruled none far+phrase	-7	-14	-7
as ruled none here	-54	-57	-62
as ruled none pair	-41		-7
as ruled none phrase	-25	-43	-33
as ruled none told	-26	-51	-28
as ruled some far	-8	-9
as ruled some far+here	16	11
as ruled some far+phrase	11	24	9
as ruled some here		9
as ruled some pair	5	21	43
as ruled some phrase	23	34	35
as ruled some told	19	36	22
behind about -4	16	8	8
behind about here-after	-7
behind at +1	-6
behind at -1	-8
behind at -2	-15	-8	-8
behind at -3	16	8	8
behind at -4	-9
behind at here-after	16	8	8
behind behind here-after	10	5	5
behind by -1	17	8	8
behind by -2	-15	-7	-7
behind by -3	-12	-6	-6
behind by -4	-6
behind by here-before	22	11	11
behind down -1	-10
behind down -2	-11	-5	-5
behind down -3	10	5	5
behind down -4	12	6	6
behind down here-before	-8
behind end +1	-28	-14	-14
behind end -1	26	13	13
behind end -2	36	18	18
behind end -4	6
behind end here-after	-30	-15	-15
behind end here-before	-8
behind for -1	21	11	11
behind for -3	12	6	6
behind for here-after	-8
behind for here-before	-14	-7	-7
behind from -1	9
behind from -4	9
behind from here-after	-7
behind from here-before	-7
behind in -1	7
behind in -2	25	12	12
behind in -3	-21	-10	-10
behind in -4	-22	-11	-11
behind in here-after	30	15	15
behind in here-before	-23	-11	-11
behind mark -1	6
behind mark -2	7
behind mark -4	-6
behind near here-after	-6
behind number -1	-14	-7	-7
behind number -2	-7
behind number -3	6
behind number -4	-8
behind number here-after	5
behind number here-before	12	6	6
behind of -1	8
behind of -4	-6
behind of here-after	8
behind of here-before	-9
behind off here-before	11	6	6
behind on +1	-18	-9	-9
behind on -2	-10	-5	-5
behind on -3	-19	-9	-9
behind on -4	12	6	6
behind on here-before	28	14	14
behind out -2	24	12	12
behind out -3	-16	-8	-8
behind out -4	-16	-8	-8
behind out here-before	10	5	5
behind over -2	-7
behind over -4	9
behind quantity +1	-5
behind quantity -1	-24	-12	-12
behind quantity -2	-18	-9	-9
behind quantity -3	29	15	15
behind quantity -4	29	15	15
behind quantity here-after	-18	-9	-9
behind quantity here-before	7
behind short -1	-15	-8	-8
behind short -2	-8
behind short -3	23	11	11
behind short -4	-6
behind term -1	6
behind term -2	-17	-9	-9
behind term here-after	19	9	9
behind term here-before	-12	-6	-6
behind to +1	10
behind to -1	-18	-9	-9
behind to -2	6
behind under -1	-5
behind under here-after	8
behind up -1	-7
behind up -2	23	12	12
behind up -3	-13	-6	-6
behind up here-after	-5
behind with -1	16	8	8
behind with -3	-7
behind with here-after	-8
behind word -1	9
behind word -2	23	12	12
behind word -4	-23	-12	-12
behind word here-before	8
behind-verb		6	39
between 	31	15	15
between are	-6
between be	12	6	6
between is	17	9	9
between on	-7
between one	-9
between still	5
by far	-32	-54	-54
by far lacks none 0	6	8	10
by far lacks none 1	-34	-50	-63
by far lacks none 2	-37	-38	-48
by far lacks none 3	12		10
by far lacks points 0	26	52	27
by far lacks points 1		-11	-8
by far lacks points 2		-28	8
by far lacks points 3	-13	-7	-6
by far+here	-11	-6	-13
by far+here lacks none 1	-24	-20	-44
by far+here lacks none 2		7
by far+here lacks none 3	-16	-13	-9
by far+here lacks points 1	19	25	32
by far+here lacks points 2		-6
by far+here lacks points 3		-6
by far+phrase	13	21	19
by far+phrase lacks none 1	23	17	52
by far+phrase lacks none 2	11	19	12
by far+phrase lacks none 3	-5		-13
by far+phrase lacks points 0	-21	-45	-18
by far+phrase lacks points 1		-7	-7
by far+phrase lacks points 2	14	45
by far+phrase lacks points 3			-9
by here	27	-7
by here lacks none 1	61	73	66
by here lacks none 2	13	-17	-9
by here lacks none 3	-8	-19	-24
by here lacks points 1	-9	-13
by here lacks points 2	-24	-31	-32
by here lacks points 3	-9	-12	-12
by pair	34	59	54
by pair lacks none 2	19	16	42
by pair lacks none 3	8	17	7
by pair lacks points 2	9	33	7
by pair lacks points 3	8	9	8
by phrase	-9	-5	-21
by phrase lacks none 0	8	9	15
by phrase lacks none 1	-15	-18	-28
by phrase lacks none 2		20	-7
by phrase lacks none 3	18	19	36
by phrase lacks points 0		6	7
by phrase lacks points 1	-17	-26	-24
by phrase lacks points 2	-7	-7	-14
by phrase lacks points 3		-8	-6
by told	-7	-11	-10
by told lacks none 0	-10	-5	-26
by told lacks none 1	-7	-8	-14
by told lacks none 3		7
by told lacks points 0	-8	-12	-13
by told lacks points 1		13
by told lacks points 2	5	-11	27
by told lacks points 3	12	15	21
counted area	8	8	8
counted bare	84	83	65
counted count	22	37	25
counted current	6	7
counted length		-24	-7
counted pack	7
counted percent	6
counted pressure			-6
counted time			6
counted volume	9	26	15
does add far	9	19	8
does add far+here		-9	7
does add here			-6
does add kind material		6
does add kind surface	-6	-11	-6
does add kind word	6	12	7
does adjust far+here		8	6
does adjust kind fixture			5
does ask far		8
does ask far+here	11	19	11
does ask kind area		9
does ask kind fixture		6
does ask kind material	-9	-13	-9
does ask kind part		10
does ask kind size	8	8	8
does ask kind surface	-7	-12	-7
does ask kind verbish	11	19	11
does ask kind word	8	15	8
does ask material	-12	-18	-12
does ask pair		8
does ask surface	-5	-9	-5
does backfill 		-6
does backfill far+here		9
does backfill kind word		9
does backfill told		-6
does bag kind material	7	7	7
does bag kind surface	-6	-6	-6
does balance 	7	7	7
does balance far			-5
does balance told	7	7	7
does be area		-12
does be defect	-8	-13	-11
does be fixture	29	45	41
does be material	-12	-15	-21
does be part	-11	-8	-26
does be size	-12	-17	-20
does be surface	-9	-15	-12
does be tool	-8	-8	-17
does be verbish		-10
does be word	-12	-12	-26
does bead far+phrase			6
does bed 	6	6	12
does bed far			7
does bed far+here			-6
does bed far+phrase			7
does bend far		-5
does bend far+here	-5	-9	-6
does bend far+phrase	7	7	13
does bend kind part			-5
does bend kind word	6	8	9
does bend word			6
does blow kind part			10
does blow part			10
does blow phrase			7
does bolt far	6	6	12
does bolt far+here	-6	-6	-13
does bolt far+phrase			6
does bolt here	-15	-15	-30
does bolt kind word	-14	-14	-28
does bolt pair			-6
does book 		8
does book far	-8	-16	-8
does book far+here	12	24	12
does book far+phrase		-8
does book here	-5	-11	-5
does book kind material		-9
does book kind word	6	13	6
does book told	5	10	5
does book word		9
does box 			-6
does box far		8	7
does box far+here		-6
does box kind fixture		8
does box kind material	11	16	17
does box kind surface	-5	-9	-6
does box kind word		-9
does box pair			8
does bring 	9	13	9
does bring area		-8
does bring defect		-6
does bring far+here	-11	-17	-11
does bring far+phrase		10
does bring fixture		-7
does bring here		-8
does bring kind area	-6	-12	-6
does bring kind fixture		-9
does bring kind part		8
does bring kind tool		7
does bring kind verbish		-7
does bring material	7	14	7
does bring pair	5	11	5
does bring part		10
does bring phrase		10
does bring verbish	-6	-10	-6
does bring word		-7
does build far+here		5
does build kind word		8
does buy 	-5	-11	-5
does buy far		7
does buy far+here		7
does buy far+phrase		-9
does buy here		-5
does buy kind material		9
does buy kind surface	-7	-13	-7
does buy material		9
does buy told		-9
does call 	-8	-14	-12
does call defect	7	7	16
does call far			-11
does call far+phrase	9	14	14
does call fixture	-10	-10	-16
does call kind defect	7	6	16
does call kind fixture	-6	-9	-10
does call kind material	8	10	14
does call kind part			-5
does call kind surface	7	17	7
does call kind word	-7	-8	-13
does call material	9	8	19
does call pair		7
does call surface	6	6	6
does call told	-10	-17	-14
does call word	-10	-15	-16
does can material	-7	-14	-7
does cap far+here			7
does caulk 		-8
does caulk far		-7	-5
does caulk far+here	5	11
does caulk here	5	6	10
does caulk kind word		6
does caulk told		-7
does caulk word		5
does change 		-12
does change area	-14	-21	-19
does change defect		-7	-6
does change far			-7
does change far+here	6	13
does change far+phrase	7	9	11
does change fixture			10
does change kind area	-13	-21	-18
does change kind defect	-6	-9	-8
does change kind fixture	5		12
does change kind material	13	25	15
does change kind part	9	14	14
does change kind surface	-7	-8	-13
does change kind verbish	7	13	7
does change material	10	18	12
does change pair			6
does change part	5	8	8
does change surface	-6	-7	-6
does change told		-6	6
does change word		-7	-8
does chase kind word	-9	-14	-9
does chase word	-5	-5	-5
does check 		9
does check area	-8	-16	-8
does check far	-9	-13	-16
does check far+here	16	24	24
does check far+phrase		9
does check fixture		-6
does check here		5	9
does check kind area		-8
does check kind tool	12	22	12
does check material		6
does check part		-6
does check tool	9	9	9
does chip kind material	6	6	6
does chip kind word		-6
does clamp far	-9	-9	-11
does clamp far+here			6
does clamp kind material			-6
does clean 	-6	-8	-8
does clean defect			6
does clean far		5
does clean far+here			7
does clean far+phrase			8
does clean fixture			-6
does clean kind material	6	5	13
does clean kind part	7	12	11
does clean material			-6
does clean part	11	11	17
does clean told			-6
does clear 			-6
does clear far+here			9
does clear kind defect	6	6	13
does clear kind finish			8
does clear kind fixture	6	6	6
does clear kind part			-9
does clip far			-6
does clip far+here			8
does clip kind word			-7
does close 	12	25	12
does close far	-14	-31	-11
does close far+phrase		-6
does close kind area	10	10	18
does close kind material	-8	-13	-10
does close kind part		-8
does close kind surface	-9	-19	-8
does close kind verbish		8
does close kind word	-11	-19	-14
does close material	-7	-14	-7
does close part		-6
does close surface	11	22	11
does close told	10	22	8
does close word	-9	-18	-9
does coat far			6
does coat kind fixture	-6	-6	-6
does coat kind surface	10	10	10
does coat kind word	-5	-10	-5
does come defect		-8
does come far	-22	-37	-28
does come far+here	-14	-23	-19
does come fixture	-8	-16	-8
does come here			-7
does come kind defect		5
does come kind material	-11	-18	-16
does come kind part	-16	-30	-18
does come kind size		-6
does come kind surface		5
does come kind tells		-8
does come kind tool		-5
does come material	7	13	7
does come pair		-8
does come tells		-6
does come verbish	9	17	9
does come word	9	18	9
does complete 			5
does complete kind material			-6
does complete pair			-7
does complete phrase			6
does cover 	-6	-8	-9
does cover far+here	6	12	7
does cover kind word		8	6
does cover told	-5	-7	-9
does cure far	-8	-15	-8
does cure kind word		8
does cut area	-9	-12	-14
does cut defect	9	13	13
does cut far	5	21	-5
does cut far+here	5	8	7
does cut far+phrase			-11
does cut finish	-5	-5	-10
does cut fixture	5	7	8
does cut here	11	14	21
does cut kind area	-12	-16	-19
does cut kind defect	8	20
does cut kind finish			-10
does cut kind fixture		7
does cut kind material	11	23	11
does cut kind part	-7	-13	-8
does cut kind surface	9	18	9
does cut kind tells		5	7
does cut kind tool		-7	-8
does cut kind verbish			-6
does cut kind word	8		19
does cut material	9	14	14
does cut part	-8	-12	-11
does cut surface			-6
does cut tells	6	6	12
does cut word		-6	6
does decide far+here	9	18	9
does decide kind surface		5
does decide kind word	5	10	5
does decide pair		-5
does dig 		6
does dig far	-6	-15
does dig far+here		5
does dig kind material	-8	-15	-10
does dig kind word		12
does dig told		8
does do 	18	36	17
does do area	7	13	7
does do defect	7	10	10
does do far			19
does do fixture	-7	-13	-7
does do here	-16	-35	-13
does do kind area	16	19	29
does do kind defect		-5
does do kind finish	-5	-6	-11
does do kind fixture			9
does do kind material	-7	-17
does do kind part			9
does do kind tool	-6	-12	-6
does do kind verbish	-7	-11	-9
does do kind word	-23	-38	-30
does do kind work	-7	-13	-7
does do material	11	18	16
does do pair	-11	-20	-12
does do surface	-10	-17	-12
does do told	18	37	17
does do verbish	-7	-6	-7
does do word		-16
does don't material		-7
does don't word	7	15	7
does drill 	-6	-8	-9
does drill area			6
does drill far+here	9	13	14
does drill far+phrase			-6
does drill kind area			6
does drill kind fixture		-7
does drill kind material		6
does drill kind size	9	17	9
does drill kind word		8	6
does drill material	5	7	9
does drill part			-10
does drill size	8	8	7
does drill told	-5	-8	-8
does drip far	7	7	15
does drip far+here			-6
does drip kind material			-6
does drip kind part			-10
does drip kind surface	11	11	11
does drip kind word			-10
does drop 		-6
does drop far		-6
does drop far+here	7	16	5
does drop far+phrase	7	13	7
does drop kind defect		6
does drop kind material		10
does drop material		6
does drop pair		-5
does dry 			7
does dry area	7	13	7
does dry far+here	-11	-28
does dry far+phrase			-7
does dry fixture	19	38	19
does dry here	-8	-11	-11
does dry kind area	9	17	9
does dry kind fixture	6	11	6
does dry kind material	-8	-15	-9
does dry kind part			-5
does dry kind surface	-9	-16	-10
does dry kind verbish	-9	-10	-16
does dry kind word	-16	-30	-19
does dry material	-17	-29	-17
does dry pair	-6		-14
does dry phrase			8
does dry surface		-10
does dry word	-13	-23	-13
does exchange kind word	6	6	6
does file far		-6
does file here		5	7
does file kind fixture			-6
does file kind part		5	10
does file kind word	6	8	12
does file part	5	5	10
does file word		5	8
does fill 	-11	-18	-17
does fill area			-5
does fill defect	9	14	12
does fill far	9	5	23
does fill far+here	12	18	16
does fill far+phrase	5	6	9
does fill fixture	-10	-17	-14
does fill here			-8
does fill kind area	-6	-8	-9
does fill kind defect	9	14	13
does fill kind fixture		-8
does fill kind material			-10
does fill kind part	-6	-8	-10
does fill kind size			9
does fill kind surface	30	37	54
does fill kind verbish		7
does fill kind word			-13
does fill material	-5	-6	-10
does fill pair	6	12	5
does fill part	-8	-8	-13
does fill phrase		-5	-8
does fill size	7	7	13
does fill surface	22	25	43
does fill told		-7	-6
does fill word	-8	-7	-18
does find 	20	32	30
does find far		-8
does find far+here	-8	-10	-14
does find far+phrase	-16	-26	-16
does find kind defect		6
does find kind fixture	-5	-10	-5
does find kind material			-8
does find kind part		8
does find kind surface	-11	-21	-11
does find kind word	-10	-19	-10
does find material		-7
does find pair		-7
does find part		10
does find told	22	35	22
does finish 	10	17	14
does finish area	7	7	11
does finish far	-6	-9	-10
does finish far+here		-5	-9
does finish far+phrase			13
does finish here	-21	-19	-44
does finish kind area	9	9	19
does finish kind finish			-5
does finish kind fixture	-8	-11	-12
does finish kind material	-9	-10	-18
does finish kind size	5	5	12
does finish kind surface	-7		-20
does finish kind tells			7
does finish kind word	-9	-11	-18
does finish kind work	-6	-6	-11
does finish material	-7	-7	-11
does finish pair		9
does finish phrase	7	9	13
does finish told		11
does finish word	-7	-10	-11
does fit 		-5
does fit far	6	12
does fit far+here	6	11	8
does fit kind fixture		8
does fit kind verbish			6
does fix 			-6
does fix far		8
does fix far+here	11	12	20
does fix here		-7
does fix kind material	-5	-13
does fix kind part			5
does fix kind surface			-8
does fix kind verbish	11	20	11
does fix kind word	5		13
does fix material		-12
does fix pair		-8	-7
does fix part	5	5	8
does fix surface			-12
does fix verbish	8	8	8
does fix word			6
does flash 	6	6	15
does float kind word		5
does flush far			-9
does forget far+here		-7
does fre far	6	6	12
does fre kind defect			5
does fre kind part			-6
does fre part	-5	-5	-10
does get 	-6	-11	-6
does get area		-11	8
does get defect	9	16	11
does get far	-5	-10	-5
does get far+phrase	-17	-35	-17
does get finish	13	19	21
does get fixture			-11
does get here		-7
does get kind area		-7
does get kind defect	5	10	5
does get kind fixture	-5	-10	-5
does get kind material	-8	-17	-8
does get kind size		-6
does get kind surface	-17	-34	-17
does get kind tool	6	12	6
does get kind verbish		-6
does get material	-17	-23	-31
does get pair	-9	-18	-9
does get part	6	7	10
does get phrase		-6
does get surface	-9	-17	-10
does get tool		6
does get verbish	-12	-20	-14
does get word	-7	-16	-6
does give far+here	-10	-18	-12
does give far+phrase	-5	-8	-8
does give material	-5	-10	-6
does give pair		7
does give word		-7
does glue 		-6
does glue far	10	15	14
does glue far+here	15	13	32
does glue far+phrase	-6	-8	-9
does glue here			-5
does glue kind fixture	5	7	9
does glue kind material	12	17	20
does glue material		5	10
does glue pair	-6	-7	-10
does glue part			-6
does glue verbish	6	6	11
does glue word		-6	-9
does go 	-12	-26	-10
does go area	9	16	9
does go defect		8
does go far	-14	-29	-13
does go far+here	-36	-58	-51
does go far+phrase	-8	-12	-12
does go finish		-6
does go fixture		-6
does go here	-6	-12
does go kind defect	-11	-21	-12
does go kind finish			11
does go kind fixture	-8	-21
does go kind material	-17	-25	-26
does go kind part	-6	-8	-10
does go kind surface	-14	-26	-17
does go kind tool		-7
does go kind verbish	-17	-30	-21
does go material			-10
does go pair	-10	-21	-9
does go part	9	20	8
does go phrase		-9
does go surface	-9	-19	-7
does go tool	8	16	8
does go verbish	-7	-13	-8
does go word	-5	-11
does gotta word		-8
does grab far+phrase		-6
does grab kind material		7
does grab material		6
does grind 	-6	-10	-9
does grind defect	9	9	9
does grind far	5	11
does grind far+here	15	25	20
does grind here		-9
does grind kind defect	10	16	14
does grind kind material	11	18	15
does grind kind part			-5
does grind kind surface		5	6
does grind kind verbish	-8	-11	-8
does grind material		8	6
does grind told	-7	-11	-10
does grout 	8	16	8
does grout far	-8	-16	-7
does grout far+phrase	9	9	11
does grout kind area	5	5	9
does grout kind material	-13	-22	-13
does grout kind surface	13	22	17
does grout kind word			-6
does grout material		6
does grout surface		7
does grout told	10	20	10
does grout word		-5
does hang 	6	14
does hang defect		-7	-6
does hang far	-8	-19
does hang far+phrase	7	15	5
does hang here	15	17	29
does hang kind defect	-6	-9	-8
does hang kind fixture	23	33	36
does hang kind material	-11	-20	-13
does hang kind part	11	21	12
does hang kind size	6	8	9
does hang kind surface	-8	-18
does hang kind word	-9	-15	-12
does hang told		8
does hang verbish		8
does hang word		-5	-8
does has material		7
does has word	-7	-13	-7
does haul 			-9
does have fixture	-9	-16	-12
does have material	-5	-11
does have part		8	5
does have verbish		8
does hit 	11	19	11
does hit far	6	10	7
does hit far+here	-9	-15	-9
does hit far+phrase	-6	-11	-6
does hit kind finish	-6	-6	-6
does hit kind fixture	-10	-10	-10
does hit kind material		11
does hit kind surface	6	10	6
does hit kind word		-7
does hit surface	5	11	5
does hit told	10	18	10
does hold 	6	9	10
does hold far	7	15	5
does hold far+here	-9	-12	-13
does hold far+phrase	-12	-18	-19
does hold here		-6
does hold kind area		-7
does hold kind defect		-8	-6
does hold kind fixture			7
does hold kind material	-13	-20	-19
does hold kind part	-7	-7	-12
does hold kind surface	8	18	5
does hold material	-8	-8	-8
does hold pair		-9
does hold part			-9
does hold surface	11	11	11
does hold told	7	10	12
does hook 		5
does hook far+here			-6
does hook kind word	5	8	8
does hook told		5
does hook word	5	5	5
does i'll material	7	14	7
does i'll part		-7
does install 	-7	-8	-11
does install far	-24	-32	-42
does install far+here			-15
does install here	25	23	52
does install kind area	5	27	-12
does install kind defect	-9	-19	-6
does install kind finish			-5
does install kind fixture	8		23
does install kind material	-11	-21	-14
does install kind part	17	21	31
does install kind size	-6	-11	-7
does install kind surface		12	-17
does install kind tells	6		16
does install kind verbish	21	31	34
does install kind word	13	14	27
does install pair	34	53	50
does install told	-6	-8	-11
does keep 		-8
does keep defect		6
does keep far	-11	-20	-11
does keep far+phrase	12	23	12
does keep kind defect		7
does keep kind part		5
does keep kind surface		-6
does keep kind word	5	10	5
does keep told		-5
does keep word		8
does knock 		8
does knock far	-12	-22	-14
does knock kind material	-7	-7	-7
does knock told		8
does land kind part		6
does lay 		-8
does lay area	-6	-6	-12
does lay defect	8	8	7
does lay far+here			-10
does lay kind area	-11	-11	-19
does lay kind defect		7
does lay kind finish	7	7	15
does lay kind part	-5	-5	-10
does lay kind surface	6	8	9
does lay kind word		-6
does lay material			8
does leave area		-8
does leave defect		-7
does leave far	-20	-33	-29
does leave far+here	-6	-10	-7
does leave far+phrase		-6
does leave fixture	7	15	7
does leave kind area		-7
does leave kind defect		-5
does leave kind fixture	-6	-11	-9
does leave kind material			-8
does leave kind part		-9	-6
does leave kind surface	-16	-35	-13
does leave kind tells		-9
does leave kind verbish		9
does leave kind word	-6	-10	-8
does leave material	10	24	7
does leave part	7	15	7
does leave surface		-12
does leave tells	-6	-13	-6
does leave told	-7	-11	-8
does leave word		-6
does let fixture	10	14	10
does let material	-6	-6	-6
does let verbish		6
does level 			10
does level far+here			-8
does level here	-11	-10	-22
does level kind defect	-6	-6	-15
does level kind material	-12	-12	-24
does level kind word	-6	-6	-12
does level pair	-7	-7	-14
does level phrase			10
does lift far			6
does lift kind material			-7
does like word		6
does lock far+here	5	5	5
does look 		5
does look area	6	12	6
does look far	8	16	8
does look far+phrase		9
does look fixture		-8
does look here		5
does look kind area	8	16	8
does look kind defect		-6
does look kind material	6	11	6
does look kind part	16	33	16
does look kind surface		-8
does look kind word		-9
does look material		-6
does look pair	7	13	7
does look part	9	18	9
does look surface		6
does look told		6
does look word		-8
does make 		6
does make far			6
does make far+here	-8	-15	-10
does make fixture	-6	-8	-11
does make here	-7	-12	-10
does make kind area		-6
does make kind fixture			-8
does make kind material	-9	-10	-18
does make kind part		-7	-6
does make kind word			12
does make material	6	13
does make pair		-6	-9
does make part	-9	-8	-20
does make phrase			-5
does make surface			6
does make told	6	9	8
does make verbish			7
does make word	6		16
does match 	10	21	10
does match far+here		-9
does match told	10	10	10
does measure 			-5
does measure far+here		6	8
does measure far+phrase			10
does measure fixture	6	6	13
does measure kind fixture			10
does measure kind material		-6	-6
does measure kind verbish		6
does miss far+here		6
does miss kind area		-8
does miss kind material	15	30	15
does miss kind surface		-6
does mount 			-7
does mount kind verbish	7	7	8
does mount phrase			-5
does move 	-5	-10	-7
does move area		8
does move far			-5
does move far+here			-9
does move far+phrase		-10
does move here	6	7	10
does move kind area		5
does move kind fixture	-7	-12	-9
does move kind material		-6	-7
does move kind part	13	24	16
does move kind word		7	7
does move pair	9	17	9
does move part		8	6
does move surface		-5
does move told	-6	-11	-7
does move word			5
does nail here			6
does nail kind defect			6
does nail kind fixture	7	7	7
does nail kind material		7
does nail kind verbish			7
does nail kind word			-8
does need area		-8
does need defect	6	11	6
does need fixture		-9
does need material	10	21	10
does need part	6	13	6
does need surface	-8	-16	-8
does need tells	-7	-14	-7
does need tool	-5	-10	-5
does need verbish		-8
does need word	-6	-11	-6
does notch far			7
does oil 	5	9	7
does oil far	-8	-12	-11
does oil kind part			-6
does oil kind verbish			9
does oil pair			7
does oil told	7	12	8
does open 	-7	-9	-11
does open area	7	9	13
does open defect	6	6	11
does open far	11	16	16
does open far+here	-5	-9	-6
does open far+phrase		-8
does open kind area	8	10	13
does open kind fixture	7	15	6
does open kind material	-9	-17	-11
does open kind part	-6	-13
does open kind size	8	16	8
does open kind word	-10	-20	-11
does open material		5
does open pair		-6
does open part			-7
does open told		-6	-7
does open word		-11
does order 	-9	-16	-12
does order far+here		8
does order here			5
does order kind surface		8
does order kind word	11	15	17
does order material	-5	-10	-5
does order pair		5
does order surface		6
does order told	-7	-13	-8
does order word	8	9	15
does owe 		-8
does owe far		-5
does owe far+here	5	11	5
does owe far+phrase		5
does owe kind material	5	11	5
does owe kind word	5	10	5
does owe pair		6
does pack far	-6	-10	-10
does pack far+here			11
does pack here		6	6
does pack kind material	6		13
does pack kind part			-7
does pack kind surface		-6	-7
does pack kind word	5	7	9
does pack material			11
does pack part			-5
does pack surface			-5
does paint 	12	22	14
does paint far	-13	-20	-19
does paint far+here	14	27	14
does paint far+phrase		-6
does paint kind area	10	18	10
does paint kind defect		-9	-5
does paint kind material		-7
does paint kind size	-6	-6	-6
does paint kind surface	9	18	10
does paint kind verbish		-5
does paint kind word			-7
does paint material		-9
does paint surface		6
does paint told	12	22	13
does pass far+here	6	5	12
does pass kind material		7
does pass kind word			7
does pass material			-6
does pass word			5
does patch 	11	20	12
does patch far	8	20
does patch far+here	-6	-16
does patch far+phrase			7
does patch fixture	-5	-5	-5
does patch here	-7	-9	-11
does patch kind area		8
does patch kind finish	7	7	7
does patch kind fixture	-6	-10	-8
does patch kind material	10	16	13
does patch kind part	-8	-16	-8
does patch kind size			8
does patch kind surface		7	6
does patch kind verbish	-8	-13	-10
does patch kind word		-10
does patch material	7	13	7
does patch pair			8
does patch part		-9
does patch surface		7	5
does patch told	11	22	12
does patch verbish		-6
does patch word	-8	-17	-8
does peel far	-6	-6	-6
does peel far+here	5	5	5
does peel kind word	8	8	8
does pick far	-8	-12	-8
does pick far+here	7	13	7
does pick far+phrase	6	10	6
does pick kind fixture		-5
does pick kind part		5
does pick kind surface		-5
does pick kind word	9	17	9
does pick material		-6
does pick word	6	11	6
does pin kind material			7
does place far+here			8
does place pair			-9
does plane 		-7	-6
does plane far	13	21	17
does plane far+here		-5
does plane fixture	19	29	28
does plane kind fixture	26	43	35
does plane kind surface	-6	-7	-11
does plane kind word	-10	-18	-12
does plane phrase			-7
does plane surface	-6	-8	-12
does plane word	-8	-13	-8
does plug defect			-5
does plug far	7	7	15
does plug far+here			-8
does plug fixture	6	6	6
does plug kind fixture			9
does plug kind material	-9	-9	-17
does plug kind part			-9
does plug kind surface			11
does plug kind word			-5
does plug material	-11	-11	-21
does plug pair	-9	-9	-9
does plug part			-5
does plug surface			10
does plumb far+here			8
does plumb here	-5	-5	-11
does plumb kind fixture	7	7	7
does plumb kind word	-7	-7	-9
does point far		8
does pop far	-5	-11	-5
does pour 		-5
does pour defect	-7	-7	-12
does pour far+here	9	7	19
does pour kind defect	-7	-7	-14
does pour kind material	9	17	10
does pour kind surface			11
does pour material	9	16	9
does pour pair	-6	-6	-14
does prime 	9	18	7
does prime far			-6
does prime far+here	-8	-14	-10
does prime far+phrase		12
does prime fixture	-11	-11	-11
does prime here	7	10	12
does prime kind area		7
does prime kind fixture	-8	-15	-8
does prime kind part	-5	-5	-5
does prime kind verbish			10
does prime pair			7
does prime part	-5	-5	-5
does prime word	6	10	7
does promise 		-8
does promise far		5
does promise kind word		6
does promise told		-8
does pull 	-6	-8	-10
does pull area		-6	-6
does pull far+here	-18	-25	-29
does pull far+phrase			-5
does pull finish	-10	-10	-20
does pull fixture		7
does pull kind finish	-12	-12	-24
does pull kind fixture		7
does pull kind material		6
does pull kind part		-13
does pull kind surface			9
does pull kind verbish	-9	-10	-18
does pull kind word	-6	-12	-6
does pull material	8	14	9
does pull part	9		25
does pull told	-6	-7	-9
does pull verbish		-5	-9
does pull word		6	8
does put 	19	26	31
does put area		-9
does put defect			-12
does put far+here	-26	-42	-36
does put far+phrase		-15
does put fixture		7	7
does put here	-12	-12	-23
does put kind area	-7	-15	-7
does put kind defect	10	6	24
does put kind fixture		13
does put kind material	-20	-25	-36
does put kind part	-5		-17
does put kind size	-8	-7	-16
does put kind verbish		-5
does put kind word	-17	-32	-19
does put material	-13	-27	-13
does put pair			-10
does put part			-9
does put phrase	-16	-20	-29
does put size			-6
does put tells	-7	-10	-10
does put told	31	42	52
does put verbish		-5
does put word			6
does quote far+here	6	11	6
does quote here		-7
does quote kind word		8
does quote pair		10
does raise kind part	7	7	7
does rake 		7
does rake defect	6	6	6
does rake far		11
does rake far+here	-7	-7	-7
does rake kind defect	6	12	6
does rake kind material	-8	-14	-8
does rake kind word		-7
does rake material	-7	-7	-7
does rake word		-9
does read far		8
does recheck kind word	8	15	8
does recut kind material	7	13	7
does redo 	6	9	6
does redo far	-6	-11	-7
does redo far+here		6
does redo here		7
does redo kind part	13	23	13
does redo kind surface	-12	-20	-12
does redo material		-5
does redo part	11	11	11
does redo surface	-10	-18	-10
does redo told	6	9	6
does rehang 		7
does rehang far	14	21	22
does rehang here	-7	-14	-8
does rehang kind fixture	8	13	10
does rehang kind material	-9	-17	-10
does rehang kind part			8
does rehang told		7
does rent far	8	8	8
does rent far+phrase	-5	-5	-5
does rent kind tool	-5	-5	-5
does replace 		5
does replace far	20	25	37
does replace far+here	20		65
does replace far+phrase	5	5	10
does replace fixture	-11	-11	-15
does replace here	-13	-22	-18
does replace kind defect	24	35	36
does replace kind finish		6	8
does replace kind fixture	-26	-36	-41
does replace kind material		-6	10
does replace kind part	25	30	45
does replace kind size	-8	-11	-13
does replace kind surface	-5	-24	8
does replace kind tells	8	17	6
does replace kind tool	-7	-15	-7
does replace kind verbish		-6
does replace kind word	21	13	51
does replace kind work		-9
does replace material			-5
does replace pair	-8	-18
does replace part			8
does replace surface	9	9	9
does replace told		5
does reset 		-5	-8
does reset far		9
does reset far+here			10
does reset far+phrase			7
does reset kind material			6
does reset kind part	14	14	28
does reset kind size	-6	-6	-6
does reset kind surface		6
does reset kind verbish		5
does reset material			5
does reset pair	5	5	5
does reset told			-6
does return far		6
does return far+here		-5
does return kind fixture	-7	-14	-7
does return kind surface		6
does return kind word	11	21	11
does return material		-10
does return pair		9
does return phrase		7
does return told		-5
does return word	7	13	7
does rip 		5	6
does rip far	7	9	11
does rip far+here	-7	-11	-11
does rip fixture	7	14	7
does rip here		6
does rip kind fixture	8	15	8
does rip kind material			5
does rip kind part	-7	-13	-7
does rip kind word		8
does rip phrase	7	10	11
does rip surface		-6
does roll 			6
does roll area	6	6	6
does roll far		-6	-9
does roll far+here	7	7	13
does roll kind area	6	7	11
does roll kind material	7	10	11
does roll kind surface			-6
does roll kind verbish	-5	-7	-9
does roll kind word			-8
does roll pair			-9
does roll told			6
does roll word			-8
does run 	19	26	32
does run area	-5	-6	-11
does run defect			-6
does run far+here	-17	-26	-25
does run far+phrase		6
does run fixture		-5
does run here			-8
does run kind area	-6		-12
does run kind defect	-5		-11
does run kind part			13
does run kind verbish	-9	-13	-15
does run kind word	-10	-11	-18
does run material	8	11	14
does run pair	-5	-6	-9
does run part		-9
does run phrase		6
does run told	17	17	35
does run verbish	-10	-14	-16
does run word	-5	-7	-8
does sand 	-6	-11	-7
does sand defect		6
does sand far	21	38	23
does sand kind area	7	9	13
does sand kind defect		7
does sand kind fixture			5
does sand kind part		5
does sand kind surface	9	19	6
does sand kind tells		-9
does sand kind word			5
does sand pair			11
does sand told	-5	-10	-6
does sand word	8	15	9
does say area		-6
does say defect		9
does say fixture		8
does say surface		-6
does say verbish		-10
does scrape 		6
does scrape area			-8
does scrape far	6	8	11
does scrape far+here		8
does scrape far+phrase			-10
does scrape fixture	7	7	7
does scrape here	9	10	16
does scrape kind area			-5
does scrape kind fixture	6	6	6
does scrape kind material	10	11	20
does scrape kind surface	5	12
does scrape material	8	6	19
does scrape phrase		6
does scrape word	-7	-10	-10
does screw 		-5
does screw far			-7
does screw fixture		-7
does screw kind area	-5		-11
does screw kind defect			-6
does screw kind fixture	-6	-7	-11
does screw kind material	10	11	20
does screw kind part	5	11	5
does screw kind surface		7	6
does screw kind word	-9	-7	-20
does screw material	9	9	16
does screw part			8
does screw word			-9
does scribe far		6
does scribe fixture		12
does scribe kind fixture	6	14
does scribe kind material	5		11
does scribe kind size		6
does scribe kind word			7
does scribe material			8
does scribe surface		-5	-6
does scribe word			10
does seal 	7	19
does seal area	10	10	18
does seal far	7	8	15
does seal far+phrase	-7	-12	-9
does seal here	6	7	12
does seal kind area	12	12	22
does seal kind material	-8	-5	-18
does seal kind surface	10	10	19
does seal kind word	-5	-11
does seal material			-10
does seal phrase		7
does seal surface			8
does seal told		13
does seal word	-11	-18	-14
does see 	6	12	6
does see area	-8	-15	-8
does see defect		-9
does see far	6	12	6
does see far+here		-6
does see far+phrase	7	13	7
does see fixture	-6	-11	-6
does see kind area	-9	-18	-9
does see kind fixture	-11	-22	-11
does see kind material		9
does see kind part	7	14	7
does see kind surface	6	13	6
does see kind tells	6	12	6
does see kind word	-8	-16	-8
does see pair	-12	-24	-12
does see part	6	12	6
does see surface		-8
does see told	5	11	5
does send 	-7	-12	-9
does send area		-10
does send defect	5		5
does send far	14	28	16
does send far+phrase	8	15	8
does send here	9	16	10
does send kind area	-6	-13	-6
does send kind defect	9	11	9
does send kind material	6	12	5
does send kind size		-7
does send kind surface	-9	-17	-9
does send kind verbish	13	27	13
does send kind word	36	72	34
does send pair	11	22	11
does send phrase		8
does send size	-5	-8	-5
does send surface	-16	-30	-16
does send told	-10	-18	-12
does send word	15	32	13
does set 			13
does set far	-7	-14	-7
does set far+here			-14
does set far+phrase	-6	-5	-13
does set here	13	13	26
does set kind area			5
does set kind defect	-6	-6	-10
does set kind fixture	6	7	12
does set kind material	17	28	21
does set kind part	-8	-16	-9
does set kind surface	-16	-23	-25
does set kind verbish		6
does set kind word			11
does set material	6	12	7
does set pair	8	5	18
does set part	-9	-14	-12
does set surface	-6	-8	-9
does set told	5		16
does set word		6	-8
does shave far		7
does shave kind fixture		9
does shim 		5
does shim defect	-7	-8	-13
does shim far	-13	-23	-15
does shim far+phrase	9	15	12
does shim fixture	9	15	13
does shim here			-6
does shim kind defect	-6	-7	-12
does shim kind fixture	7	11	11
does shim kind material		9
does shim kind part			5
does shim kind word	-6	-9	-7
does shim material		7
does shim word		-6
does show 	9	16	9
does show far	-12	-22	-12
does show kind material	-8	-15	-8
does show kind verbish	6	13	6
does show material	-5	-5	-5
does show told	8	15	8
does shut 	-6	-11	-8
does shut defect	-5	-5	-5
does shut far+here	6	11	5
does shut far+phrase			5
does shut kind defect	-6	-6	-6
does shut kind fixture			6
does shut kind part	6	6	13
does shut kind word	8	8	8
does shut material			-7
does shut part	5	5	11
does shut phrase		-6
does silicone far+here	5	5	5
does sister far			10
does sister kind material	10	14	15
does sister pair			5
does sit 		-5
does sit far	6	11	6
does sit far+here	-12	-23	-13
does sit kind fixture	-5	-7	-5
does sit kind material	5	11
does sit kind part			12
does sit kind surface		-5
does sit kind word	-6	-11	-6
does sit material	7	14	7
does sit surface		-7
does sit verbish		7
does skim far	6	11	5
does skim kind material		-9
does skim kind part	-6	-6	-6
does skim kind surface	8	15	7
does skim kind word		7
does skim material	-6	-6	-6
does skim surface	9	18	9
does skim told		-5
does skim word		5
does snug 			-7
does snug far+here			6
does snug fixture			-6
does snug kind fixture			-5
does snug kind material	10	10	19
does snug kind part			-5
does snug kind word			8
does snug material	9	9	17
does snug told			-7
does snug word			7
does sort far+here	-10	-10	-10
does splice far	9	9	16
does splice kind fixture	5	5	5
does splice kind material	10	10	16
does splice material	7	7	7
does spray defect			5
does spray far		-5
does spray far+here	9	13	13
does spray here			-7
does spray kind defect	5	7	9
does spray kind fixture			-10
does spray kind surface			-8
does spray kind verbish			7
does spray kind word	12	14	22
does spray told			-6
does spray word	6	6	10
does stand far	6	12	6
does stand kind material		8
does stand kind word			-6
does start 	-9	-19	-9
does start area		9
does start far	7	13	7
does start far+here	-7	-14	-7
does start fixture		5
does start here	8	17	8
does start kind area	8	16	8
does start kind fixture	14	29	14
does start kind part	-11	-22	-11
does start kind surface	11	21	11
does start kind verbish	7	14	7
does start kind word	-15	-30	-15
does start part	-9	-19	-9
does start surface	8	16	8
does start told	-7	-14	-7
does stay far+here		8
does stay far+phrase	-7	-13	-7
does stay kind material		-6
does stick 	-7	-11	-9
does stick far+here	-9	-13	-13
does stick far+phrase		-8
does stick kind material		8
does stick kind part			-5
does stick kind surface	-10	-14	-17
does stick kind word			16
does stick material		5
does stick pair	7	11	10
does stick surface	-7	-7	-7
does stick told	-6	-10	-8
does stick word	9	7	20
does stop far		6
does stop far+here	-5	-11
does stop here			6
does stop kind material	6	10	6
does stop kind word		-7
does stop pair		-6
does straighten far			6
does straighten kind material			8
does straighten part			6
does straighten word			-5
does strip 	5		14
does strip far+phrase	-5		-11
does strip kind material			-9
does strip kind surface		7	6
does strip kind word	-8	-8	-15
does strip material			-8
does strip pair			5
does strip told			10
does strip word	-7	-9	-13
does stuff 		7
does stuff far	-9	-14	-14
does stuff far+here		-7
does stuff far+phrase			7
does stuff kind word	-6	-12	-5
does stuff told		6
does swap area			-5
does swap far	7	6	14
does swap far+here			-8
does swap far+phrase			-5
does swap fixture	-9	-13	-14
does swap here			5
does swap kind area			-6
does swap kind defect		6
does swap kind fixture	-10	-15	-15
does swap kind material	12	13	25
does swap kind part	21	34	28
does swap kind size	-6	-12	-7
does swap kind surface	-7	-7	-15
does swap kind verbish		-7
does swap kind word			-5
does swap material	10	9	21
does swap pair		7	5
does swap part	13	20	19
does swap size	-6	-6	-6
does swap surface	-9	-10	-17
does swap verbish			5
does swap word			-5
does swing 		-7
does swing kind part		8
does swing kind word	-7	-13	-7
does swing told		-6
does take 	6	15
does take area		-8
does take defect		-8	5
does take far	6	9	9
does take far+here	-15	-8	-40
does take far+phrase	24	41	31
does take fixture			5
does take here	24	43	29
does take kind area		-5
does take kind defect		-8
does take kind part	21	44	18
does take kind surface	-12	-18	-17
does take kind tells	5	11
does take kind tool		5	-11
does take kind verbish	-14	-23	-18
does take kind word	12	42	-13
does take kind work	8	8	8
does take material		5	9
does take pair	-17	-21	-29
does take part	13	21	18
does take size		-5
does take surface	-8	-13	-10
does take tool		-7
does take verbish	-6	-11	-8
does take word	15	41
does talk far		6
does talk kind material	12	12	12
does tape 	-7	-9	-11
does tape defect	6	6	11
does tape far			6
does tape kind defect	7	7	12
does tape kind material	-5		-11
does tape kind size	-6	-6	-12
does tape kind verbish			7
does tape kind word	8	7	17
does tape material	-6	-9	-10
does tape pair			9
does tape part	-6	-6	-9
does tape told	-7	-10	-12
does tape word	12	12	22
does tear far	6	6
does tear far+here	-6	-6	-6
does tear kind surface	8	8	8
does tear kind word	-8	-8	-9
does tear pair			-5
does tear word	-10	-10	-10
does tell 		-10
does tell area	11	21	11
does tell far	-12	-18	-18
does tell far+here	-6	-9	-8
does tell far+phrase	8	14	12
does tell kind finish		7
does tell kind fixture		-6
does tell kind material	-7	-11	-10
does tell kind part	-8	-8	-16
does tell kind surface	6	5	13
does tell kind verbish		8
does tell pair	10	17	10
does tell part	-13	-18	-20
does tell phrase	7	10	12
does tell surface		-8	6
does tell told	-11	-20	-13
does tell word	8	17	7
does template far			-8
does test 			9
does test far			5
does test far+here	9	16	11
does test far+phrase	-8	-6	-18
does test here	7	5	15
does test kind defect	6	6	11
does test kind material	5	11
does test kind surface		8
does test kind word			7
does test told			11
does throw 		-5
does throw far	7	12	7
does throw kind surface	6	6	6
does throw kind word	8	13	8
does tie far	9	9	16
does tie kind part			7
does tie kind word	-6	-6	-11
does tighten far			6
does tighten far+here			-5
does tighten kind defect			6
does tighten kind part	16	16	32
does tighten kind word	-7	-7	-14
does tighten pair			7
does tighten part	16	16	33
does tighten word	-7	-7	-14
does tile far+here	-6	-12	-6
does tile here		7
does tile kind material		-10
does tile kind surface	9	17	9
does top 		-7
does top far+here	-5	-7	-8
does top far+phrase			-8
does top kind material	-7	-10	-11
does top kind surface		7
does top kind verbish		-8	-6
does top kind word			-10
does top pair	-7	-6	-15
does top told		-7
does touch 		6
does touch far	5	11	5
does touch far+phrase		-6
does touch kind area	-6	-12	-6
does touch kind defect		6
does touch kind fixture		-9
does touch kind surface	15	29	15
does touch kind tool		-8
does touch kind verbish	-7	-14	-7
does touch material		8
does touch pair	-7	-14	-7
does touch told		6
does touch up kind word	5	10	5
does trim defect		-8
does trim fixture	-5	-5	-10
does trim kind defect		-8	-5
does trim kind fixture	-5	-5	-10
does trim kind material			8
does trim material			8
does trim phrase		6
does trim told		-5
does trip far+here	-5	-5	-5
does trip kind part	-8	-8	-8
does try far+phrase		9
does turn area			-6
does turn far	-9	-15	-12
does turn far+here	13	23	17
does turn here			-9
does turn kind area			-5
does turn kind material			6
does turn kind part		8
does turn kind verbish		-8
does turn kind word	8	17	7
does turn part		5
does turn word		10
does use 			-6
does use far+here	-6	-7	-12
does use fixture	10	10	10
does use here	7	7	13
does use kind area			-6
does use kind defect			-5
does use kind fixture	8	8	12
does use kind part	-7	-12	-11
does use kind word		-7	-7
does use material			-7
does use pair	-8	-12	-10
does use part			-6
does vacuum kind word			-5
does wait fixture		9
does wait part	5	10	5
does wait word	-12	-24	-12
does walk 		7
does walk far			7
does walk far+here	-5	-8	-7
does walk fixture	-10	-10	-10
does walk kind area	14	14	14
does walk kind material	-7	-16	-5
does walk kind surface	7	11	7
does walk kind word	-5	-17
does walk material	-13	-29	-13
does walk surface	8	14	8
does walk told		9
does walk word		-10
does want area	-7	-14	-7
does want defect		-9
does want fixture		8
does want part	-22	-43	-22
does want surface		7
does want tool		7
does want verbish		-6
does want word	10	20	10
does wash 	6	12	7
does wash far+here	5	6	10
does wash far+phrase			-5
does wash kind fixture	-6	-6	-6
does wash kind surface	9	9	13
does wash material			5
does wash surface	5	5	9
does wash told	5	11	5
does wire far+here	-6	-6	-8
does wire here	6	6	10
does work kind word			-6
does work pair			-5
does zip far			-9
ends CONJ	-5	-10	-5
ends DET		-7	-6
ends NEG	-6	-9	-11
ends Nidiom		-6	9
ends Nlabel		13	-5
ends PREP	-32	-44	-10
ends PRON	10	20	9
ends Q0		11	12
ends Qarea	-6	-6	-8
ends Qcount		-10
ends Qlength	-23	-35	-34
ends Qother			7
ends Qtime	-20	-20	-38
ends SUB	-7	-17	-7
ends Vmeasureb	6
ends Vmeasurei	-19	-14	-14
ends Vmoveb		-10	-14
ends Vmovei		-8
ends Vmovep		-6
ends Vmoves	5	9
ends Vneedb		-5
ends Vneeds	-14	-11
ends Votherb	16	12	14
ends Votherpp	7
ends Vreturnb	8	6	11
ends Vsayb	-22	-10	-12
ends Vsaypp	-10	-13	-16
ends Vworkb		28
ends Vworkbp	9
ends Vworkbpp	8	11	14
ends Vworki	18	18	21
ends Vworkpp	17	24	26
ends Vworks	13		6
ends plain	60	36	22
ends tarea	9	16	11
ends tarea's	7
ends tareaVotherb	-10	-12	-6
ends tdefect	-38	-20	-22
ends tdefect's	7	9	12
ends tdefectVmeasures	-9
ends tdefectVotherb	19	33	30
ends tdefectVotheri	-17	-30	-28
ends tdefectVotherp	-9	-10	-9
ends tdefectVotherpp		-5
ends tdefectVothers			-8
ends tdefectVworkbpp	7	12	18
ends tdefectVworkp			5
ends tdefectVworkpp	-12	-12	-9
ends tfinish	8	-11
ends tfinish's	-7	-7	-7
ends tfinishVworkb	-21	-14	-17
ends tfinishVworkpp			11
ends tfixture	35	47	23
ends tfixture's	36	13	15
ends tfixtureVworkb		10	10
ends tfixtureVworks	6		8
ends tmaterial	23	19	34
ends tmaterial's	9	-6	-28
ends tmaterialVotherb	7	13	10
ends tmaterialVworkb	24	39	16
ends tmaterialVworki	14
ends tpart	22	29	11
ends tpart's	12	25	16
ends tpartVotherb		-11
ends tpartVworkb	7	21	13
ends tpartVworki	-6
ends tpartVworks	28	10	16
ends trole	27	47	33
ends tsurface	21	48	21
ends tsurface's	11	-13	-25
ends tsurfaceVotherb			8
ends tsurfaceVworkb	-16	-20	11
ends tsurfaceVworki	-7	-7	-10
ends tsurfaceVworks	-13	-20	-9
ends ttool	-7
ends ttoolVotherb	-10	-10	-22
ends ttoolVworkb	16		11
ends ttoolVworks	-10	-16
ends twork	5	9	21
ends twork's		-7
ends verb	-16		10
ends w	-16	-25	-21
ends w's	-24	-10	-13
ends wed	-12	-9
ends wing		-9	-10
ends wly	-8	-10	-10
far after 0	-6		10
far after 1	22	49	65
far after 13+	-55	-61	-43
far after 2	13		-6
far after 3-4	16	-21	-22
far after 5-7	-46		-49
far after 8-12	-34	-44	-64
far before 0	21	27	21
far before 1	15	-19	-10
far before 13+	15	13
far before 2	-7	-14	-27
far before 3-4	17	22	42
far before 5-7	11	15	25
far before 8-12	11	15
figure-between	20	10	10
flawed	5	24	83
frame copula +1	6	29	-10
frame copula -1	-20	-33	-41
frame copula -2	10	-16	-8
frame copula -3	-50	-46	-29
frame copula -4			6
frame copula area	-11	-15	-19
frame copula defect	-17	-35	-12
frame copula finish	-9	-14	-13
frame copula fixture			15
frame copula here-after	-13	10
frame copula here-before	34	6	21
frame copula material	-8	-18	-7
frame copula part			-9
frame copula size			-6
frame copula surface	11	27
frame copula tells	13	21	17
frame copula tool	-12	-11	-27
frame copula verbish	5		16
frame copula word	-26	-40	-41
frame copula work	7	14	6
frame imperative +1		-22	-11
frame imperative -1	19	23	12
frame imperative -2	11	22	7
frame imperative -3	6		6
frame imperative -4	-11	12	7
frame imperative area		-7
frame imperative defect	-12	-24	-13
frame imperative finish	9	18	10
frame imperative fixture			9
frame imperative here-after		9
frame imperative here-before	-17	-35	-19
frame imperative material			6
frame imperative part	9	18	9
frame imperative size		8
frame imperative surface		9	-14
frame imperative tells	-14	-29	-14
frame imperative tool	15	29	17
frame imperative verbish			17
frame imperative word		8	-15
frame modal +1	-13	-23	-12
frame modal -1		-11	-11
frame modal -2	-8	-10	-21
frame modal -3		-5	-6
frame modal -4	11	-12	23
frame modal area		-7
frame modal defect		-11
frame modal finish	-12	-15	-12
frame modal fixture	-6	-12	-7
frame modal here-after		6	14
frame modal here-before		24	6
frame modal material	12	24	13
frame modal part	-5	-9	-6
frame modal size	-9	-19	-9
frame modal surface	22	39	28
frame modal tool	-5	-10	-5
frame modal verbish	-14	-20	-22
frame modal word			13
frame modal work		-8
frame none +1	-43		-23
frame none -1	27	71	30
frame none -2	37	21	21
frame none -3	21	20
frame none -4	7		18
frame none area	13	25	14
frame none defect	5	13
frame none finish	8	7	19
frame none fixture		19	-8
frame none here-after	5	-18	8
frame none here-before		-14	-8
frame none material	-10	-12	-19
frame none part	12	20	17
frame none size	-17	-26	-25
frame none surface	-7	-21
frame none tells	10	20	9
frame none tool		-8
frame none verbish	-6		-16
frame none word	17	23	31
frame none work	11	13	21
frame owed +1	-18	-36	-17
frame owed -1		-12
frame owed -2		16
frame owed -3	6	22	10
frame owed -4	-5		-5
frame owed area	9	18	7
frame owed finish	-6	-11	-6
frame owed fixture	6	12	6
frame owed here-after	7	-8	8
frame owed material	22	42	25
frame owed part	-8	-15	-8
frame owed size	-8	-17	-8
frame owed surface	-13	-26	-13
frame owed tells	-8	-15	-8
frame owed tool	-9	-18	-9
frame owed verbish	7	15
frame owed work	-7	-13	-7
frame past +1	17	11	7
frame past -1	21	20	35
frame past -2	-18	-24	7
frame past -3	10	11
frame past -4	-42	-15	-55
frame past area			-5
frame past defect			-12
frame past finish	-8	-11	-13
frame past fixture	9	23	7
frame past here-after	20	-19	-21
frame past here-before		18	37
frame past material	-6	-7	-12
frame past part	10	14	16
frame past size	19	17	41
frame past surface			9
frame past tells		-12
frame past tool	-9	-17	-12
frame past verbish	-9	-13	-15
frame present +1	-11	-6	-5
frame present -1	9		25
frame present -2	11	13	7
frame present -3	8	-13	-13
frame present -4	11	-23	-10
frame present area		-13
frame present defect	30	43	48
frame present fixture	-5		-14
frame present here-after	-21	25	5
frame present here-before	9	23	7
frame present material	-7	-11	-10
frame present part	7	12	8
frame present size		6
frame present surface	-6	-7	-12
frame present tool	12	17	18
frame present verbish		-11
frame present word	-8	-11	-12
head 2 x	-18	-25	-27
head abajo	-6	-6	-6
head ac	-9	-8	-8
head access panel	6	6	5
head adhesive	-11	-18	-11
head aerator	6
head air	-16	-13	-7
head air gap	9	10	10
head alone	-16	-12	-7
head aluminum	-6	-6	-6
head answer	6	6	6
head anybody		-5
head anyhow	-6	-8
head anyone		-9
head anything	-16	-27	-16
head anywhere	-6
head apartment	-6	-6	-6
head apron		-7
head arc fault	-11	-11	-11
head arm	10	8	10
head aside	-10	-11	-7
head baby	6	6	6
head back bedroom	-9	-7	-9
head back door	-7	-7	-7
head back room			-6
head back wall		-8	-7
head backer rod	-5	-5	-5
head backing		8
head backset	6	6	6
head backsplash	-12	-12	-7
head bad	-11	-12	-10
head bag	-7
head ball	-6
head ballast	-20	-13	-13
head baluster	12	8	8
head balusters	27	37	24
head bar		-8
head bare	-17	-12	-12
head base	-7
head basin	7		6
head batch	-6	-6	-6
head bath			6
head bath fan	7	13	6
head bathroom	-6	-5	11
head batt	7
head batts			14
head bay	-16	-16	-10
head bays			-12
head bead			-6
head beam	17	9	7
head beam's	6	6	6
head bedroom	22	18	9
head bedroom 2	-14	-11	-16
head bedrooms		-6
head bell		-9
head belt	-6	-8
head bench	16	7	10
head better	-18	-28	-22
head bin		-6
head bird nest	6	6	6
head bit	-27	-29	-24
head bite	-5
head black			8
head black iron	-6	-6	-6
head blade	7
head blanks	-9	-9	-9
head blinds	23	12	25
head block	9		15
head blocks	7
head bloke		5
head board	24	28	23
head boards	55	61	58
head boiler	11	17	9
head bolt	17	8	11
head bolts		-6
head bonding	-5	-5	-5
head bonding primer	-7	-9	-7
head book	-6	-6
head bookcase	-6	-6	-6
head booked		-5
head boot	-16	-17	-10
head bottom		-11	-11
head bottom rail	-11	-16	-19
head bottoms	7	7	7
head bout	-7	-12	-8
head bowed	-5	-5	-9
head bowl	7		8
head box	-13	-9
head box room	6	6	6
head boxes	21	14	11
head brackets	38	35	38
head braided lines	-10	-10	-10
head branch	10	10	10
head brass	13	10	8
head brkr	-11	-8	-8
head broke	-6
head brother		-7
head brown		9
head bubble			9
head bucket	-20	-23	-17
head bulb			6
head bulbs	10	5	7
head bulkhead	8	8	8
head bump	11	19	10
head bumps	-8	-8	-8
head bunch	-5	-5	-5
head butt joint		10
head button	-10	-16	-13
head c		-5	-6
head cabinet			-6
head cabinet doors	10	10	10
head cabinet's	-7	-7	-7
head cabinets	9	18	9
head cam	5	5	5
head camera		6	8
head can light	-6	-6	-6
head can lights	17	13	13
head cap	-10	-10	-15
head car	11	11	11
head carpet	-22	-20	-19
head carriage bolts			5
head carton	-8	-9	-6
head cartridge	6	8
head casing		13
head cast	7	7	7
head cat			-8
head caulk	-8
head ceiling	30	30	26
head ceiling's		-12	-6
head cellar	7
head chain	-10	-17	-18
head chandelier	9	9	9
head change		-7
head chase	9	12	13
head check valve	-7
head chimney	-11		-5
head chimney's	7	7	7
head chip	12	20	17
head chipped	6	5	6
head chk	-14	-14	-14
head circuit	-19	-16	-6
head clamp	6	9	13
head clamps			7
head clean out	-14	-15	-15
head clear	-21	-14	-16
head cleat			10
head cleats	7		7
head clicks		-6
head clip			-9
head clips	5		5
head close	-7
head closer			9
head closet	13	8	8
head closet door	-7	-7	-7
head closet rod	5
head coat	8	16	7
head cock	-6	-12	-6
head code	-7
head coil		7
head cold	5
head collar	13	7	6
head color		-7	-8
head column	24	18	19
head coming off	-7	-13	-7
head company	-15	-28	-15
head concrete		-10
head construction adhesive		-8
head cord	-34	-25	-24
head cords	-8	-7	-11
head corner	-56	-51	-45
head corners	-14
head corridor	6	13	15
head couch	23	16	16
head count		5
head counter		9
head countertop	-6
head course	-12	-5	-5
head cove base	8	14	9
head crack	36	44	39
head cracked	-10	-11	-14
head crank	15	15	15
head crawl	7	12
head credit		8
head crooked	6	7	12
head crown	7	13	10
head crown in	12	20	10
head crown's			-5
head crumbs	-7	-7	-7
head cup	9	8	15
head cupboard	-6	-11	-6
head curb		-6
head cut	29	31	34
head cut out	-5	-7
head cutout		10
head cycle	5
head cycles	-7	-7	-7
head damp		9
head damper		6
head dark	13	6	7
head dave		-7
head dead	-9
head deal	-7	-7	-7
head deck	-13	-17	-10
head demo	7	7	7
head den	5	7
head device	-7	-7	-7
head dining room	-8		-6
head dirt	-7
head dirty	-6	-6	-6
head dishwasher		-11	-7
head dishwasher's	20	10	11
head disposal			5
head dog	-6
head door	-38	-21	-27
head door sweep	5	5	5
head door's	-16	-26	-16
head doors	42	61	37
head double			7
head dowel	-18	-15	-22
head downspouts	-7	-7	-7
head downstairs			7
head draft	-6
head drain	-12		10
head drain line		11	6
head drains	20	11	19
head drawer		-6
head drawer front	7	7
head drawers	-9	-6
head drawing		-11
head dried	-6
head drip	-19	-15	-20
head drip edge	10	8	8
head drips	-5		-6
head drive	-10	-12	-7
head driveway		-11	-6
head drop			-6
head drops	-11	-17	-18
head drum	9	6	17
head dry	8		-5
head dryer	-8		-10
head dryer vent			7
head drywall	16	18	10
head drywall's		-9
head duct		-7
head dust		-7	-5
head earliest	10	17	10
head earth	7
head east	9	9	9
head east side	9	9	20
head edge		15	14
head eggshell	-20	-22	-18
head egress	6	6	6
head either	-7	-8	-5
head elastomeric		-7
head elbow	-17	-11	-11
head elbows	-10	-11	-12
head electrical	8	11	6
head element	6	5	5
head else	-9	-17	-10
head enamel	-8	-15	-8
head end	-21	-22	-16
head end panel	-6
head entry	16	26	15
head epoxy		13
head escutcheon	-5
head everywhere			8
head except	-27	-30	-24
head expansion	16	16	16
head expansion tank	6	6	6
head extender		6
head face	-14	-11	-9
head face frame	-8	-8	-8
head fall	-12	-12	-14
head falls	7	-8
head family room's	-8	-8	-8
head fan	8	10	15
head fan's	10	16	9
head far		-7
head fascia	7	11	6
head fast	7	7	7
head faucet		-5
head fella	-16	-16	-14
head fence	15		7
head field tile	13	13	13
head fifth		-5
head filler			11
head filler strip	16	32	16
head filter	11	14	18
head filter's	-5	-5	-5
head filters			6
head final	5	9	5
head finish	-6	-7	-6
head finish nails	-6	-6	-6
head fire	11	23	13
head first	11	-10	6
head first coat			9
head fl	8	8	8
head flags	11	11	11
head flange	9	12
head flapper	10	6	7
head flare	7	7	7
head flashing	-21	-25	-13
head flat	-6	6
head flex			16
head flight		5
head float	21	10	12
head flood test			8
head floor	17
head floor box	-5	-5	-5
head floor drain	19	14	16
head floor tile	6	5	5
head floor's	24	31	19
head flue	14	6	6
head foam	-20	-20	-33
head foil tape	-7	-7	-7
head forms	-7	-13	-7
head four by six	-8	-8	-8
head fourth		13
head frame		7	5
head free			5
head freezer	-12	-6
head fresh			9
head fridge	-27	-6	-9
head front		8
head front door		8	-7
head front door's	8	8	8
head front edge		-8
head front room	35	24	25
head front's	5	5	5
head full	7	13	14
head furnace		-15	-7
head furniture	5	10	5
head gable	-7
head gable vent	10	10	10
head gap			9
head garage	-32	-31	-10
head garage door	-6	-8	-6
head gary	-5	-5	-5
head gas	5	9
head gasket	-9	-9	-14
head gate	16	20	11
head gauge	-12	-6	-6
head gfci			-5
head glass	10	14
head glides	-5		-7
head glue	-26	-42	-36
head glued		6
head go			-7
head god	-10	-8	-7
head goes		10
head going		-8
head grease	-10	-14	-20
head grid		-6
head grille	-8	-11
head grit	-6
head ground	-5		-9
head grout	-6		-10
head guards	6	6	6
head guest room	16	8	6
head guide	8	9	15
head guide's	7	7	7
head gutter	6	5
head gutters	15	11	11
head half			5
head hall		-9	6
head hall bath		-7	-5
head hall closet			7
head hallway	32	45	25
head hand	-20	-32	-22
head handle	-14	-14	-11
head handrail		10
head handrail bracket	9	19	10
head hangers		-5
head hanging	14	13	16
head happy	-15	-14	-27
head hardwood	13	10	7
head head		-7	-8
head header	6	17	7
head heat	-13	-16	-17
head heating	-6
head height	7	10	17
head hidden hangers	-7	-7	-7
head high bays	6	6	6
head hinge	-6
head hinges			11
head hits	-9
head holding	-5
head hole		14	17
head hole's	-8	-15	-8
head holes	-24	-26	-6
head home	-6	-11	-11
head honeycomb	-6	-6	-6
head hood	-12
head hook	-8
head hooks	29	21	20
head hose	15	5	14
head hose bib	-7
head hose clamp	8	8	8
head hot	25	17	16
head house	-28	-35	-33
head house wrap	13	13	13
head htr	8	8	8
head humidity	8
head hump		7
head hump in	9	9	9
head hung			-7
head hvac	-8	-14	-8
head inside	-18		-7
head inspection		5
head insulation	20	13	23
head iron	6
head island	17	18	12
head isolator	14	13	11
head itself		11	7
head jamb	-19	-11	-15
head job	-16	-20	-16
head joint	14	20	23
head joints	9	7	13
head joist	6		-6
head joist bay	-6	-6	-6
head joists	17	13	10
head key	-16	-20	-14
head keys	-5
head kids room	6	6	6
head kit	18	24	12
head kitchen			-15
head kitchen faucet	-5	-5	-8
head kitchen island	15	7	7
head kitchen's	5
head knobs	11	7	6
head knots	6	6	6
head ladder		-8
head lags			-7
head laminate	-10	-5	-5
head lamp	-11	-13	-14
head landing	7	10
head latch	10	6	8
head late	-7	-7	-7
head later	12	6	5
head latex	6	6	6
head lath		-5
head laundry	24	27	28
head layers	5		6
head lead	14	8	19
head leaf	6
head leak			-6
head leaks			-6
head lean	-6	-10	-6
head leaning	19	8	7
head leaves	-7	-7	-9
head ledger's		-7	-6
head leg	15	9	7
head legs	-5	-6	-7
head let go	-7	-9	-10
head level	-20	-16	-20
head leveler	5	11	5
head leveller	5	5	5
head lh	-5	-5	-5
head lid	34	15	27
head lift	6		9
head lifts	-5	-5	-5
head light	-28	-27	-27
head light's	5	13	6
head lights	-8	-6	-7
head line	13	-7	24
head line's	10	10	10
head linen closet	7		5
head lines		-6
head lint	-8	-5	-8
head lip	-14	-16	-24
head list		-8
head lite	18	14	14
head little		-7
head living	10	10	10
head living room			-9
head load	-9	-9	-8
head long wall			-5
head loo	-18	-11	-14
head loop	29	32	32
head loops	7	7	7
head low spot	7	5
head lunch	-6	-6	-11
head m		-9
head machine	-15	-18	-25
head main	29	22	38
head make	6	5
head manifold	-9	-6	-6
head mantel	6
head maple		-5	-5
head marble	14	13	8
head master bath	-14	-8	-9
head mastic	-8	-5	-12
head mat	-5
head match	-6	-6	-6
head mdf	-8	-8	-8
head me	-16	-22	-11
head means		-9
head membrane	11	9	6
head mesh	-15	-11	-21
head meter	-10	12	6
head middle	-28	-20	-24
head mind		-5
head mine		-6
head mirror	20	22	14
head mirror's	-7	-6
head missing	-6	-20	-9
head miter	11	16	10
head mixer	6
head moisture meter	-6	6
head mold	11	19	11
head mortar		-9	-6
head mortise	6	6	6
head mosaic	13	7	9
head motion	9	9	9
head motor	-10	-13	-8
head mouse	7	7	7
head mud	-27	-26	-22
head mudroom	8	6	10
head nail	-9	-14	-9
head nail holes		5
head nails	-7	-8	-9
head natural	-9	-9	-9
head needs		11	11
head neutral	12	22	12
head never came	-5	-5	-5
head new	-10	-16	-10
head newel	9
head nice	-11	-10	-19
head niche	6	6	12
head no hot water	19	13	13
head no power		5	5
head no water	-9	-18	-9
head noon	-10	-14	-15
head nope	-7
head north	6
head north side	-8	-11	-9
head north wall		7
head nosing			7
head not touching	-7	-13	-7
head number	-16	-16	-24
head numbers	9	18	9
head nursery	16	16	13
head nut	10	7	15
head oak	19	15	21
head office		-6	-6
head oot	-8	-8	-8
head open	11	19	9
head opener	-12	-12	-12
head opening	-9		-6
head openings	9	9	9
head oscar	-13	-24	-13
head outlet	15	29	24
head outlets			-6
head outside	16	25	13
head outta	-7	-5	-5
head oven	-5	-8	-6
head packing	-8	-5	-5
head pad		9
head pads	-11	-12	-10
head paint	-24		-20
head paint's			7
head pair		11	-6
head pan	6
head pan's	7
head panel	19	12	7
head panels	8	10	5
head pantry			-9
head particle board	-8	-8	-8
head party wall	12	12	12
head paste	6	8	6
head patch	12	6	8
head pavers	33	27	25
head peak	-6	-6	-6
head pedestal	6	6	6
head pendant	15	15	20
head penny round	9	9	9
head people	10	21	12
head permit		-9
head pickets	6
head picture window	10	10	10
head piece	24	32	19
head pieces		5
head pile	-12	-10	-8
head pinhole	6	6	7
head pins	-5	-9	-6
head pipe	29	26	28
head pipes			6
head pitch	6
head plank	14	11	10
head planks	10	18	10
head plaster	26	46	24
head plaster's	-7	-7	-7
head plastic	-8	-10	-10
head plate	-7	-8	-14
head plug	6	7	6
head plugs		-10	-10
head ply		6	7
head pocket	6	6	13
head poly	-48	-51	-32
head pool	11	6	6
head popcorn		5
head porch	-7	-13	-9
head posts		-7	6
head powder room	-6		-8
head prehungs	6	6	6
head press	5	5	5
head pressure's	7	7	7
head primed			9
head primer	-51	-74	-54
head prob	-5
head proof	-5	-5	-5
head proud		-6	-6
head pull	-12	-20	-9
head pulling	10	8	8
head pump	34	20	13
head punky		-6
head push	-6		-6
head put	-5		-5
head quick		-6
head r	-12	-21	-15
head rack		-6	-6
head rad	-9	-8	-12
head rafters	11	8	8
head rail's	19	22	30
head rails	-11	-15	-15
head rain	-18	-17	-11
head re			6
head real	-12	-8	-5
head rear	11	7
head rec'd	9	9	9
head receptacle		7
head red	-10	-8	-8
head reducer	11	21	11
head register			-7
head regulator	16	17	17
head remains	8	8	8
head rental		7
head retaining wall	8	8	8
head return	6		9
head reveal	-9	-8	-14
head rh	21	10	11
head riding	8	8	8
head rim	9
head rim joist	7		6
head ring	7		6
head rise	8
head risers	-6	-10	-6
head rm	5	9
head rms	9	9	9
head rock		-9
head rockwool	-24	-24	-24
head rod		10
head rollers	-7
head room	32	25	15
head roots	-13	-7	-7
head rotten		5
head round	-10
head row	-11	-10	-10
head rtu	-9	-6	-6
head rubber	5	6	6
head run	6		-7
head run's			9
head rung			-6
head runner	8	13	7
head rush		8
head rust			6
head s	-14	-9	-16
head saddle	7	7	7
head salon	-30	-17	-16
head samples	8	8	8
head sand	-20		-9
head sander	-5	-5	-5
head sash	10	9	10
head sash cord	16	12	12
head satin	-11	-9	-19
head saw			-8
head say	-18	-12	-10
head scrap	23	25	16
head scratch	10
head screed		5
head screen		8	9
head screw	-29	-19	-37
head screw pops	10	10	10
head screws	-27	-22	-25
head seal	12	5	6
head sealant	-12	-21	-11
head sealer	-20	-27	-23
head seam	33	42	39
head seam open	6	6	6
head seams		-6
head seat's	-5	-5	-5
head second	8	8	8
head second coat	-9	-9	-5
head second coat's	-6	-6	-6
head second floor		9
head section	-12	-9	-11
head self		6
head self leveler	12	22	12
head shade		-9
head shakes	10	10	10
head shaving	-6	-6	-6
head sheathing	12
head shed			11
head sheet	-5	-12	-12
head sheets	26	20	33
head shelf		13	25
head shellac primer	-9	-9	-9
head shelves	7	8	9
head shim	5	10	6
head shingle	6
head shoes	-5	-8	-5
head shop	-29	-44	-33
head shot			-11
head shower	20	38	28
head shower floor	9	9	9
head shower tray	9	9	9
head shut	-6	-6	-6
head shutoff			-5
head shutter	-7	-7	-7
head side	-108	-99	-96
head sides	-17	-22	-23
head siding	14	14	6
head sign	-10	-18	-9
head sill		-13	-7
head sink	-32	-28	-30
head site		-5	-15
head size	-16	-12	-10
head skim	-9	-10	-6
head skin	-6	-6	-6
head skip	-11	-11	-23
head skirting	17	14	10
head slab	7	-11	-5
head slabs	10	7	6
head slate	15	23	13
head sleeve	9	10	7
head slid	7	6	11
head slider	-9
head slides	-8	-10	-14
head slip	-7
head slip nut	6	6	6
head slope	13	6	5
head slow		-6
head small	-6
head smell	-16	-11	-11
head smoke	-6		-6
head smokes	5	6	6
head snapped			-6
head snug	-6	-10	-6
head soap dish	8	8	8
head socket	-6	-5	-7
head soffit	-10
head soffit vents	12	12	12
head soft	6	9	5
head soft spot		5	5
head somewhere	5		5
head soon		-10	-5
head sooner	-7	-15	-7
head spare		12
head spec	-8	-7	-10
head spindles	7	9	8
head spins	5
head splash	-10		-16
head splice	7	8	5
head split		7	15
head spot		27
head spots	-20	-25	-21
head spout	-11	-8	-14
head spring	-10	-7	-8
head spring's	-6	-6	-6
head stack	-5	-5
head stain	7		12
head stain blocker	-7
head stainless			-6
head stair treads	9	12	9
head stairs	25
head stairwell	-8		-6
head standing	-10	-5	-5
head staple	-18	-11	-11
head start	6	11	6
head stat			5
head station	7
head stem	-6	-6
head step	9	28	17
head steps	23	15	14
head stick	-6
head sticker		-9
head stile		-7
head stock	5
head stone	5
head stones	-10	-10	-14
head stools	-6	-11	-6
head stop			10
head store	-11	6
head storm	6
head stove		-9
head straight	-14	-6	-14
head strapping	-7	-7	-7
head straps	7	12	7
head street	14	6
head strike	17	24	18
head strike's	7	5	5
head string	8		8
head stringer	8	8	8
head strip			-5
head stripped		-6
head strong			7
head structural screws	-11	-7	-7
head stub			9
head stucco		5	5
head studs	16	28	19
head study	-7	-17	-8
head subfloor	7	16	8
head suite			10
head sump	-6
head support	7	7	7
head supposed	-9	-11	-7
head surround	13	13	13
head swap	6	6	6
head sweep	16	10	11
head switch			-7
head t		6
head tables	8	8	8
head tag	5
head take off	-8	-6	-7
head tank	-7
head tanking	-12	-12	-12
head tap		6	6
head tape	15	11	13
head tee		-6
head template		6
head thermostat		9
head thinset	-19	-22	-27
head third coat	-5	-6	-8
head threshold	11	15	13
head tile	19	-6	28
head tile's	-11	-6	-10
head tiles	29	17	18
head timber	-7	-7	-7
head tip			5
head tire	6	6	6
head toe kick	7	9	5
head toe kick's	8	8	8
head toilet	43	25	29
head toilet flange	8	6	7
head toilet's	9	10	9
head told	-6	-6	-11
head too long		-8	-5
head too short			-8
head top	-21	-8	-20
head tore	6	6	12
head torn		-5	-8
head touch	-6	-12	-6
head towel	5	5	5
head track	-20	-17	-11
head transition's	10	10	10
head trap	11		12
head trap arm	7	7	7
head traveler	-10	-10	-10
head travelers	27	15	19
head tray	-8	-10	-6
head tread	22	22	14
head treads	37	27	22
head trench	23	9	7
head trim		9
head trims	-5
head trouble	-6
head trunk	6	6	6
head tub	-18	-23	-20
head tub spout	6
head tub's			6
head tube	6	6	8
head tubes	9	7	7
head turn	-6	-6	-6
head twice		-8	-16
head two by ten	-6	-6	-6
head two by three	-5	-5	-5
head type s	-6	-6	-6
head under cabinet lights	16	8	8
head underside	-14	-22	-14
head unit		-8
head upper	16	13	24
head uppers	-8	-11	-6
head upstairs			-6
head upstairs hall	-7	-5	-8
head upstand	8	15	8
head v	-7	-7	-7
head valves	9
head vanity light	10	6	6
head varnish		-7
head vent pipe	19	13	13
head vinegar	-7	-13	-7
head vinyl		8
head wait	18	21	12
head wall		-10	-18
head wall plates	5	5	5
head wall's		-14	-6
head wallpaper	-8		-5
head walls	-9	-12
head walnut		-5
head want	-5	-6
head wants	-19	-23	-16
head warranty	6	10	6
head washer		7	14
head washer box	-9	-6	-5
head wasp nest		6	6
head waste	15	6	7
head water	-42	-43	-50
head water heater		-12	-6
head water heater's	8	8	8
head water line	14	14	29
head water's	-7		-7
head wax	-10	-9	-10
head wax ring	-5	-13	-19
head ways	-5	-5	-9
head wc	8	8	9
head weather	-6	-6	-6
head weatherstrip	19	9	9
head wee	5	5	5
head weight	10	7	12
head weights	6	6	6
head wet		6
head wet saw	-6	-6	-6
head whenever	-8	-17	-8
head white	-25	-31	-28
head whoever	-20	-16	-15
head wind	-10	-6	-9
head window	16		22
head window's	-11	-13	-8
head windows	8
head wire	21	25	16
head wire nuts	-9	-7	-7
head wires	-7
head wood	-9	-11	-6
head wrap			-7
head wrench	-9	-9	-9
head wrong	-16	-15	-11
head yard		-6
head you'd	-12	-7	-7
head zone	-6
heading	8	-11	-24
heading +1	24	36	10
heading -1	-34	-55	-34
heading -2	-9		-6
heading -3	44	35	26
heading -4	13	12
heading here-after	-9	-12	-17
heading here-before	-16	-24	-12
is-flaw	22	11	11
join		10
join +1	-83	-72	-77
join +1 area	-15	-10	-13
join +1 fixture	-21	-23	-15
join +1 material	-27	-10	-26
join +1 part	-7	-11	-17
join +1 size	8
join +1 surface	-20
join +1 tool	-6	-6
join +1 verbish	10
join +1 word		-10
join -1	21	31	22
join -1 area		-10
join -1 defect	-8	13	8
join -1 finish		7
join -1 fixture	13	27	11
join -1 material	-10	-16	-12
join -1 part	-10	16	15
join -1 size	-9	-10
join -1 surface	35	21	18
join -1 tells	16		10
join -1 tool	28
join -1 verbish	-26	-27	-37
join -1 word	-15
join -1 work		7
join -2			11
join -2 area	5	-6	-20
join -2 defect	-15	-10
join -2 finish	16		10
join -2 fixture	39	33	21
join -2 material		27	25
join -2 part		-21
join -2 size	10
join -2 surface		-26	-7
join -2 tells	-13	-11
join -2 tool	-21	-14	-9
join -2 verbish	-7	22	-6
join -2 word	-23		-13
join -2 work		17
join -3		13
join -3 area		9	-9
join -3 defect		-13
join -3 finish	-10		-6
join -3 fixture	6	11	17
join -3 material			9
join -3 part	46	33	25
join -3 size	-13	-15	-14
join -3 surface		23
join -3 tells	-21	-22	-13
join -3 tool	-8
join -3 verbish	17
join -3 word	-14	-25	-15
join -3 work	-9	-8	-7
join area	39	-5	15
join area+area		7
join area+defect	18		12
join area+finish	-20	-22	-22
join area+fixture	-9
join area+material	8	10	11
join area+part	62	20	19
join area+surface	29	23	11
join area+tells	-15	-7	-7
join area+tool	5	6
join area+verbish		11	14
join area+word	-49	-54	-35
join area+work		-13
join defect	63	45	47
join defect+area	18
join defect+defect	-14	-13	-8
join defect+finish	24	11	15
join defect+fixture	30	25	7
join defect+material	-12	-9	-14
join defect+part	16	25	23
join defect+size	-5
join defect+surface	39	29	20
join defect+tells	-5	-10	-6
join defect+verbish	25	14	14
join defect+word	-22	-7	20
join finish		8	-5
join finish+defect	-10	-6	-6
join finish+finish		7
join finish+fixture	11	22	16
join finish+material	32	17
join finish+part	-17	-24	-18
join finish+surface	-19	-5
join finish+word		6	9
join fixture	-70	-35	-71
join fixture+area	-16	-14	-23
join fixture+defect			-15
join fixture+finish		-5	-5
join fixture+fixture	14	13	13
join fixture+material		13	-12
join fixture+part	-23	-22	-16
join fixture+size	-23	-12	-13
join fixture+surface		6	5
join fixture+tells	6
join fixture+tool	-8
join fixture+verbish	-8	-16	-12
join fixture+word	-25	-19	-25
join heading	27	29	17
join leads 		24	12
join leads about	-13	-9	-7
join leads above	8	5	5
join leads across	6
join leads after	7
join leads along	-10
join leads around		6	7
join leads at	26	34	23
join leads before		-6
join leads before word verb	5	10	6
join leads behind	20	21	21
join leads by	48	47	25
join leads by term	-8
join leads down in			-6
join leads for	13		9
join leads from	-5	-12	-14
join leads in	9		11
join leads in quantity			-10
join leads in term term	12
join leads in term word		8
join leads in word	-17	-20	-11
join leads in word term	6	5	5
join leads in word verb	8	8	18
join leads in word word	-7
join leads into	-15	-15	-28
join leads mark	17	12	10
join leads mark number	21	13	13
join leads mark number term	-10	-6	-6
join leads mark quantity	7	11	9
join leads near	12	9	7
join leads number	19	11	18
join leads of	6	-7	-15
join leads of term quantity	6	6	6
join leads of term word		11	6
join leads of word word	8
join leads off	28	20	16
join leads off word	5	5	5
join leads on	18	14
join leads on number	7
join leads on quantity			-9
join leads on term	-7	-6
join leads on term term	-5	-8
join leads on verb verb	-9	-9	-9
join leads on word		-11	-19
join leads on word word	-11	-10	-10
join leads out of	19	15	16
join leads over	23	22	14
join leads quantity	-38	-26	-37
join leads quantity at	-18	-7	-8
join leads quantity from	-8	-7	-7
join leads quantity of		9
join leads quantity of quantity		-5	-5
join leads quantity of word	-6
join leads quantity to	-8	-8	-8
join leads quantity verb		-6	-6
join leads quantity word	7
join leads quantity word quantity	-9	-8	-13
join leads quantity word word	6
join leads term		14	5
join leads term by	-11	-6	-6
join leads term in	18	6	7
join leads term on		-7	-6
join leads time	13	6	6
join leads time with		7
join leads time word		-5
join leads to	-47	-24	-13
join leads to verb word	-5	-7
join leads under	23	7	18
join leads under word word	-14	-7	-7
join leads up		9
join leads up in	8	5	7
join leads verb	19	37	9
join leads verb at	5	11	12
join leads verb behind	6
join leads verb by	18	21	13
join leads verb in	31	25	20
join leads verb in term	-5
join leads verb mark	16	9	9
join leads verb of		-7	-5
join leads verb off in	-11	-6	-6
join leads verb on	8	9	18
join leads verb on word	9	9	6
join leads verb out	-18	-9	-9
join leads verb over	-9	-8	-8
join leads verb quantity	28	29	23
join leads verb quantity in	11	7	7
join leads verb quantity of	-8
join leads verb quantity off	-7
join leads verb quantity on	8
join leads verb quantity term	-11	-13	-8
join leads verb quantity verb	-6	-5	-5
join leads verb term in	7
join leads verb term on	-6
join leads verb term term	14	6	6
join leads verb term word		-6	-13
join leads verb to	-9	-12
join leads verb up with		5	5
join leads verb verb	-14
join leads verb verb at	6
join leads verb verb on	-5
join leads verb verb out	-6	-5	-5
join leads verb verb term	-5
join leads verb verb verb	12	10	8
join leads verb verb word	-16	-13	-11
join leads verb with	7		9
join leads verb word	-8		-7
join leads verb word by	-11	-10	-10
join leads verb word on	8	5	5
join leads verb word quantity	21	13	12
join leads verb word to		7
join leads verb word up	-5
join leads verb word with	7	8	8
join leads verb word word	30	18	22
join leads with	-12
join leads with quantity	-21	-19	-17
join leads word	-63	-54	-28
join leads word at		-11
join leads word in	6
join leads word of	5	6	6
join leads word of term	-6	-6	-6
join leads word off	-6	-6	-6
join leads word on			7
join leads word quantity			-8
join leads word quantity of	-10	-12	-9
join leads word quantity on	-10
join leads word quantity word	5	8	8
join leads word term	-11	-11	-12
join leads word term by	-9	-6	-6
join leads word term for	17	8	8
join leads word term verb	-8
join leads word term word		-9
join leads word to verb	19	15	12
join leads word up to	-6
join leads word verb	7	12	9
join leads word verb in	-16
join leads word verb on	23	24	21
join leads word verb quantity	-9	-6	-7
join leads word verb verb	7
join leads word verb word	7	9	10
join leads word word	-16	-22	-14
join leads word word verb	-44	-39	-36
join leads word word word	21	9	11
join material	-42		29
join material+area	25	21	26
join material+defect	-9	35	14
join material+finish			14
join material+fixture	-8	9
join material+material	-10	-14	10
join material+part	-34	-21
join material+size	-9
join material+surface	19		12
join material+tells		-9	7
join material+tool			-22
join material+verbish	-22	-17	-7
join material+word			-15
join part	-104	-77	-111
join part+area	-29	-9	-19
join part+defect		-14	-10
join part+finish		-6
join part+fixture	-17	-26	-9
join part+material	-22	-16	-34
join part+part	-10	-6	-10
join part+size	21	8	13
join part+surface	-12		-11
join part+tells	-8		-8
join part+tool	-27	-12	-19
join part+verbish	-44	-11	-24
join part+word	11	-18	-11
join part+work		11
join same-before	35	11	24
join same-before area	15	13	23
join same-before defect	-5	-5	-5
join same-before finish	-13	-13	-23
join same-before fixture	-10	-29	-18
join same-before material	51	16	18
join same-before part		15	14
join same-before size	-14	5	5
join same-before surface		5
join same-before tells	-23	-10	-9
join same-before tool	17	29
join same-before verbish	-5		16
join same-before word	23	-9
join same-before work			8
join size	29	9	18
join size 1	-16		-12
join size 2	8	6	17
join size 3		-5	-13
join size+area	7
join size+fixture	9		6
join size+material	-15
join size+part	6		7
join size+surface	8		-10
join size+tells	12	6	6
join size+verbish			5
join size+word	5
join sizes 1+1		-19	-16
join sizes 1+2	-20	20	13
join sizes 1+3	10		-9
join sizes 2+1	-8	-16
join sizes 2+2	8		-5
join sizes 2+3	10	24	18
join sizes 3+1	-18	-6	-21
join sizes 3+2	21	-15
join sizes 3+3		15	6
join surface	30	14	23
join surface+area	34	16	19
join surface+defect	-20	-19
join surface+finish	-30	-19	-26
join surface+fixture	21		16
join surface+material		19	31
join surface+part	-26	-26	-29
join surface+size	8	7	7
join surface+surface	-6
join surface+tells			-7
join surface+tool	-19	-12	-13
join surface+verbish	35	33	18
join surface+word	30	12
join tells	28	40	23
join tells+area		8
join tells+defect		-8
join tells+fixture	-8	-13	-10
join tells+material	29	27	13
join tells+part	-14		-6
join tells+size	7
join tells+surface	10	10	7
join tells+tool			9
join tells+verbish		-10	-8
join tells+word	14	31	17
join tool	-8	11	-9
join tool+defect		12	8
join tool+finish		9
join tool+fixture	-9		-13
join tool+material	-17	-8
join tool+part	10	16	13
join tool+size	7	6
join tool+surface		-6	-8
join tool+tells		-8
join tool+verbish	19	11	7
join tool+word	-25	-14	-16
join verbish	-20	-21	-18
join verbish+area		-11
join verbish+defect	10	-13
join verbish+finish	-6	-5	-7
join verbish+fixture	-24	-29	-20
join verbish+material	-5	-13
join verbish+part	59	53	40
join verbish+size	-20	-11	-10
join verbish+surface	-21	17	-14
join verbish+tells	-7
join verbish+tool	-10	-15	-7
join verbish+verbish	9	9
join verbish+word	-28	-15	-13
join word	83	46	53
join word+area	-29	-20	-39
join word+defect	-17		10
join word+finish	32	22	8
join word+fixture	25	13	6
join word+material	43	16	15
join word+part	7	31	26
join word+size	-6	-11	-5
join word+surface	-15	-36	7
join word+tells	-14	-7
join word+tool	74	47	34
join word+verbish	-10	-23	-32
join word+word	26	28	35
join word+work		13
join work		-17
join work+defect		8
join work+fixture	8	16	11
join work+material	-6	-11	-7
join work+part		-7
join work+word	-12	-15	-15
kind +1 area	21	26	39
kind +1 defect		-17	-6
kind +1 finish	-32	-34	-44
kind +1 fixture	34		15
kind +1 material	-21	13	-13
kind +1 part	-15		-13
kind +1 size	-19		-13
kind +1 surface		9	9
kind +1 tells	15	6	18
kind +1 tool		-6
kind +1 verbish	-36	-28	-18
kind +1 word	-31	-38	-67
kind +1 work		-8
kind -1 area	-27	-14	-6
kind -1 defect	17	27	37
kind -1 finish	9		-12
kind -1 fixture	-11	8
kind -1 material	18	12	6
kind -1 part	32	58	74
kind -1 size	10	8	-11
kind -1 surface	-12	-19	-12
kind -1 tells		-7
kind -1 tool		-6	-15
kind -1 verbish			-13
kind -1 word	25
kind -2 area	-16	-6	-17
kind -2 defect	-28	-40	-25
kind -2 finish	34	21	36
kind -2 fixture	12
kind -2 material	28	27	50
kind -2 part	9	14
kind -2 size	11
kind -2 surface	-14	-33	-29
kind -2 tells	-11	-9	-10
kind -2 tool	-7		11
kind -2 verbish	5	5
kind -2 word	15	34
kind -3 area	-30	-11	-16
kind -3 defect	20	9
kind -3 finish	-8		-9
kind -3 fixture		42	-6
kind -3 material	28		13
kind -3 part		-12	-20
kind -3 size	-8	-20	6
kind -3 surface	9	9	-5
kind -3 tells		-11
kind -3 tool	-8	-13
kind -3 verbish	20		5
kind -3 word		6	8
kind -3 work	-5
kind -4 area	31	29	29
kind -4 defect	-10	-8	-17
kind -4 finish			6
kind -4 fixture	19	-13	9
kind -4 material		-17	-13
kind -4 part	-45	-35	-37
kind -4 size	-15	-17	-9
kind -4 surface	21	51	20
kind -4 tells	-16	-19	-20
kind -4 tool	5
kind -4 verbish	-26	-36	-23
kind -4 word	-14		7
kind -4 work	6		17
kind defect	-55	-32	-12
kind finish	-19	-26	-23
kind fixture	51	49	26
kind here-after area	17	-15	-20
kind here-after defect	-57	-24	-15
kind here-after finish	-16	-6
kind here-after fixture	7		6
kind here-after material	12	26	-25
kind here-after part	52	30	29
kind here-after size	11		12
kind here-after surface			7
kind here-after tells		8
kind here-after tool	-17		-10
kind here-after verbish	19		13
kind here-after word	-25	-20
kind here-before area	9
kind here-before finish	-15	-6	-19
kind here-before fixture	7	17	8
kind here-before material	-15	-17	-7
kind here-before part	34	10	12
kind here-before size	-10
kind here-before surface		8	14
kind here-before tells		8	5
kind here-before tool	20	13	9
kind here-before verbish		9	12
kind here-before word	-12	-18
kind here-before work		6	7
kind material	42	33	12
kind part	55	52	41
kind size	-12	-25
kind surface	9	21
kind tells	-20	-25	-8
kind tool	-11	-17	-15
kind verbish	-6	-28	-12
kind word	-32	-25	-26
kind work			14
lead a -1	-15	-8	-8
lead a -2	-17	-9	-9
lead a -3	-16	-8	-8
lead a here-after	36	18	18
lead area -1	9
lead finish here-after	6
lead finish here-before	-8
lead fixture -1	7
lead fixture -4	20	10	10
lead fixture here-after	-21	-10	-10
lead material -2	-14	-7	-7
lead material -3	12	6	6
lead material -4	-6
lead material here-after	-18	-9	-9
lead material here-before	5
lead number -1	21	11	11
lead number -2	25	13	13
lead number -3	-5
lead number here-after	-33	-17	-17
lead on -3	10	5	5
lead on here-before	-5
lead part -1	12	6	6
lead part -2	-9
lead part -4	-7
lead part here-after	-17	-9	-9
lead part here-before	34	17	17
lead quantity -1	28	14	14
lead quantity -2	17	8	8
lead quantity -3	18	9	9
lead quantity -4	-26	-13	-13
lead quantity here-after	-8
lead quantity here-before	12	6	6
lead role -2	-8
lead role -3	-5
lead role -4	-12	-6	-6
lead role here-after	27	14	14
lead size here-before	-8
lead surface -3	-5
lead surface -4	-6
lead surface here-after	-8
lead surface here-before	11	5	5
lead tells -2	-6
lead tells -3	12	6	6
lead tells here-before	-6
lead that -1	-8
lead that -2	10	5	5
lead the -1	-11	-6	-6
lead the -2	-9
lead the -3	-9
lead the here-after	41	20	20
lead the here-before	-10	-5	-5
lead to -1	8
lead to -2	5
lead to -4	-7
lead tool here-before	9
lead verbish -2	41	21	21
lead verbish -3	5
lead verbish -4	14	7	7
lead with -1	-13	-7	-7
lead with -2	12	6	6
lead with -3	-12	-6	-6
lead with -4	8
lead word -1	16	8	8
lead word -2	15	8	8
lead word -4	-9
lead word here-after	-5
lead word here-before	-12	-6	-6
led none far	-32	-51	-80
led none far+here	-18	-25	-9
led none here	15	-23	-38
led none none 0 outside 1	-13	-42	-19
led none none 0 outside 2	-31	-19	-19
led none none 0 outside 3	11
led none none 0 outside 4	20	37	18
led none none 1 outside 0			-24
led none none 1 outside 1	16
led none none 1 outside 2	-14	-28
led none none 1 outside 3		-21	-19
led none none 1 outside 4	-13	36	11
led none none 2 outside 0	18	-6
led none none 2 outside 1	15	32	30
led none none 2 outside 2		-16	-25
led none none 2 outside 3	-10		-8
led none none 2 outside 4	-35	-19	-22
led none none 3 outside 0	16	8
led none none 3 outside 1		6	11
led none none 3 outside 2	-17	-25	-24
led none none 3 outside 3	-21	-7	-12
led none none 3 outside 4	21	10	15
led none pair			8
led none points 0 outside 1	-5		-9
led none points 0 outside 2	-15	-16	-18
led none points 0 outside 3		-17
led none points 1 outside 0	-17	-16	-13
led none points 1 outside 1	-7	-7	-11
led none points 1 outside 2	11		9
led none points 1 outside 3	-11	-8	-8
led none points 1 outside 4	17	20	7
led none points 2 outside 0		8	16
led none points 2 outside 1			8
led none points 2 outside 2	7	5	-16
led none points 2 outside 3	-7
led none points 2 outside 4	-5	-15	-9
led none points 3 outside 1	-10	-27	-13
led none points 3 outside 2	6	10	8
led none points 3 outside 4		11	6
led none told	-9	-6	-26
led turn far+here	-5	-10
led turn here	15	19	26
led turn none 0 outside 1	13	25	14
led turn none 0 outside 2	19	29	28
led turn none 0 outside 3		8
led turn none 0 outside 4	-12	-22	-15
led turn none 1 outside 0	16	26	22
led turn none 1 outside 1		-6
led turn none 1 outside 2	-5	-5	-12
led turn none 1 outside 3	-7		-21
led turn none 1 outside 4	-7	-16	-5
led turn none 2 outside 0	10		28
led turn none 2 outside 1	-20	-37	-23
led turn none 2 outside 2	-9	-18	-10
led turn none 2 outside 3		10	-10
led turn none 2 outside 4	8	13	12
led turn none 3 outside 0	-9		-24
led turn none 3 outside 1		-7	6
led turn none 3 outside 2	9	17	11
led turn none 3 outside 3	-7	-10	-10
led turn pair	16	27	20
led turn points 0 outside 1	-11	-18	-17
led turn points 0 outside 2		8
led turn points 0 outside 3	21	39	25
led turn points 0 outside 4		7	-5
led turn points 1 outside 0	8	6	18
led turn points 1 outside 1	6	15
led turn points 1 outside 3	-6	-8	-10
led turn points 1 outside 4	7	10	10
led turn points 2 outside 0	5	11	5
led turn points 2 outside 1			13
led turn points 2 outside 2	5		18
led turn points 2 outside 3	-8	-15	-8
led turn points 2 outside 4		-12
led turn points 3 outside 0		10	6
led turn points 3 outside 1		-7
led turn points 3 outside 2	-5	-9	-7
led turn points 3 outside 3			-5
led turn told	6	17
led verb far	-6	-12	-7
led verb far+here	10	25
led verb far+phrase	13	21	19
led verb none 0 outside 0	6	8	11
led verb none 0 outside 1	16	36	13
led verb none 0 outside 2	-9	-13	-15
led verb none 0 outside 3			10
led verb none 0 outside 4	-17	-31	-22
led verb none 1 outside 0	30	41	51
led verb none 1 outside 1	6	17
led verb none 1 outside 2	9	22
led verb none 1 outside 3	-6	-19
led verb none 1 outside 4	-31	-50	-44
led verb none 2 outside 0	10	32
led verb none 2 outside 1	-5		-15
led verb none 2 outside 2	22	33	36
led verb none 2 outside 3	-14	-23	-18
led verb none 2 outside 4		-10
led verb none 3 outside 0	15	11	35
led verb none 3 outside 1	-8		-24
led verb none 3 outside 2	24	40	32
led verb none 3 outside 3	-12	-28	-7
led verb none 3 outside 4			-8
led verb pair	26	45	35
led verb phrase	-9	-5	-21
led verb points 0 outside 0	7	10	11
led verb points 0 outside 1		8	-15
led verb points 0 outside 2			10
led verb points 0 outside 3	7		18
led verb points 0 outside 4	-6	-16
led verb points 1 outside 0	-27	-37	-43
led verb points 1 outside 1			9
led verb points 1 outside 2	9	17	11
led verb points 1 outside 3	12	14	24
led verb points 1 outside 4	-17	-32	-21
led verb points 2 outside 0	-21	-21	-42
led verb points 2 outside 1	-13	-20	-21
led verb points 2 outside 2	8	13	13
led verb points 2 outside 3	10	19	11
led verb points 2 outside 4	10	14	15
led verb points 3 outside 0	-12	-21	-16
led verb points 3 outside 1	10	19	11
led verb points 3 outside 2	8	9	15
led verb points 3 outside 3		8
led verb points 3 outside 4	-5	-9	-7
led verb told		-12	10
lemma be object	-50	-25	-25
lemma be subject	38	19	19
lemma chip object	10
lemma come subject	7
lemma come subject-late	6
lemma cut object	11	5	5
lemma find object	8
lemma get object	-5
lemma get subject-late	-12	-6	-6
lemma give object	13	7	7
lemma go object	-12	-6	-6
lemma go subject	-14	-7	-7
lemma hang object	-11	-6	-6
lemma hang subject	10	5	5
lemma have subject	-28	-14	-14
lemma hit object	-15	-8	-8
lemma keep subject	15	7	7
lemma land object	-14	-7	-7
lemma leak subject	-7
lemma leave object	24	12	12
lemma leave subject	-8
lemma lift subject	-9
lemma need object	8
lemma pull object	-20	-10	-10
lemma put object	-9
lemma read subject	-6
lemma run object	-7
lemma run subject	-6
lemma sag object	-5
lemma say subject	-25	-13	-13
lemma send object	5
lemma show subject	-9
lemma sit subject	6
lemma sit subject-late	5
lemma strip subject	7
lemma take subject	-7
lemma trip subject	-8
lemma turn object	-15	-7	-7
lemma turn subject	8
number many many	60	97	84
number many one	-34	-53	-50
number none many	20	38	24
number none one	-11	-17	-21
number one many	-19	-33	-25
number one one		-12
opens CONJ	-9	-15	-12
opens COP		-9
opens DET	15	25	18
opens M#	8	8	8
opens M+	7	7	7
opens NEG			-7
opens Nlabel			11
opens OPR		-6	-5
opens PREP	-47	-64	-46
opens PRON	-22	-32	-34
opens Q0	12	27	10
opens Qarea	-8	-8	-8
opens Qcount	-9	-19	-7
opens Qlength		-6	-5
opens Qpack	9	11	17
opens Qtime			-8
opens Qweight			-5
opens SUB		11	-6
opens Vbuyb		-6
opens Vmoveb	-10	-14	-18
opens Vmovei	-6	-9	-8
opens Vmovep	-24	-16	-20
opens Vmovepp			12
opens Vmoves	-7	-7	-10
opens Vneeds		9
opens Votherb	-12	-7	-8
opens Votheri	10	7	9
opens Vreturnb	6		14
opens Vsayb	-10	-11	-9
opens Vsaypp	-8	-11	-13
opens Vseeb	-5	-10	-5
opens Vworkb	-54	-57	-22
opens Vworkbp			-8
opens Vworkbpp		-5
opens Vworki	-9	-16
opens Vworks	25	10	16
opens tarea	36	65	5
opens tarea's	16	20	16
opens tareaVotherb		-7
opens tdefect	-42	-29	-38
opens tdefect's	7	8	11
opens tdefectVmeasures	-9
opens tdefectVotherb		26	34
opens tdefectVotheri	-29	-29	-38
opens tdefectVotherp	-15	-22	-12
opens tdefectVotherpp		-6
opens tdefectVothers			-8
opens tdefectVworkbpp	-6
opens tdefectVworkp		-5	-8
opens tdefectVworkpp	-11	-12	-9
opens tfinish			-12
opens tfinish's	-7	-7	-7
opens tfinishVworkb			-7
opens tfinishVworkpp			6
opens tfixture	64	70	50
opens tfixture's	52	13	28
opens tfixtureVworkb		11	6
opens tfixtureVworks	5		8
opens tmaterial	18	30	22
opens tmaterial's	48	30
opens tmaterialVotherb	6	13	10
opens tmaterialVworkb		27
opens tmaterialVworki	48	41	35
opens tmaterialVworks		15	18
opens tpart	70	52	69
opens tpart's	25	34	28
opens tpartVotherb	16		14
opens tpartVworkb	12	28	17
opens tpartVworki		6	13
opens tpartVworks	33	34	33
opens trole	-35	-51	-45
opens trole's		6
opens tsurface	33	20	16
opens tsurface's		-25	-16
opens tsurfaceVotherb	-11
opens tsurfaceVothers		-5
opens tsurfaceVworkb	15	16	5
opens tsurfaceVworki			5
opens tsurfaceVworks	-15	-34	-22
opens ttool	-12	-19	-6
opens ttool's	13	11	15
opens ttoolVotherb	-10	-10	-23
opens ttoolVworkb	14		17
opens ttoolVworks		-6	5
opens w	-60	-36	-27
opens w's	-43	-53	-25
opens wed	-17	-18	-14
opens wing	12	11	20
opens wly	-17	-24	-16
opens-with +1	30	15	15
opens-with -1	-27	-13	-13
opens-with -2	-21	-11	-11
opens-with -3	28	14	14
opens-with -4	6
opens-with here-after	9
order before far+here		19	-10
order before here	27	19	60
order before pair	19	11	48
order behind far+here	6	6	10
order behind far+phrase	13	21	19
order behind here	-28	-24	-60
order behind pair	10	40	-10
order behind phrase	-18	-23	-32
outside 0 lacks none 0	6	7	10
outside 0 lacks none 1	41	55	47
outside 0 lacks none 2	34	26	26
outside 0 lacks none 3	23	16	14
outside 0 lacks points 0	7	10	11
outside 0 lacks points 1	-33	-42	-35
outside 0 lacks points 2	-17		-23
outside 0 lacks points 3	-8	-17	-16
outside 1 lacks none 0	19	27	10
outside 1 lacks none 1	18	7
outside 1 lacks none 3	-11		-10
outside 1 lacks points 0	-14	-9	-34
outside 1 lacks points 2	-6	-17
outside 1 lacks points 3		-8
outside 2 lacks none 0	-21		-8
outside 2 lacks none 1	-8	-6	-11
outside 2 lacks none 2	13		7
outside 2 lacks none 3		21	11
outside 2 lacks points 0		-5
outside 2 lacks points 1	22	19	20
outside 2 lacks points 2	19	15	14
outside 2 lacks points 3	9	10	17
outside 3 lacks none 0	13		8
outside 3 lacks none 1	-10	-33	-31
outside 3 lacks none 2	-22	-13	-32
outside 3 lacks none 3	-38	-44	-26
outside 3 lacks points 0	18	19	33
outside 3 lacks points 1			11
outside 3 lacks points 3		8
outside 4 lacks none 0	-12	-20	-20
outside 4 lacks none 1	-48	-31	-35
outside 4 lacks none 2	-29	-17
outside 4 lacks none 3	16		8
outside 4 lacks points 0		-7	-5
outside 4 lacks points 1		-6	-6
outside 4 lacks points 2		-7	7
pair by 1	-10	-9	-9
pair by a	-24	-43	-41
pair by about	-14	-11
pair by above	6
pair by across	21	10	10
pair by after	11	10	7
pair by again	-9	-6	-6
pair by all	-21	-33	-19
pair by along	13	16	19
pair by already	9
pair by an	-25	-14	-13
pair by and	-41	-8	-19
pair by another	9	16	9
pair by are	33	21	37
pair by around		8	10
pair by as		-9
pair by at	16		17
pair by away	7	7	7
pair by back		-7	10
pair by backed	9
pair by bad	-9	-5	-5
pair by be	17	15	14
pair by been	9
pair by before	-12	-20	-12
pair by behind	26	25	28
pair by between	-12	-10	-7
pair by both	-18	-14	-16
pair by bottom	9	9	9
pair by box	22	10	10
pair by by	-11
pair by came	-16	-17	-15
pair by can	6
pair by close	-11	-7	-7
pair by cold	6
pair by come	12	14	12
pair by comes		-5
pair by cut			5
pair by day	-6	-6	-6
pair by did	6
pair by done	-18	-21	-13
pair by down	-29	-21	-20
pair by dry	7	11	6
pair by each	-28	-20	-21
pair by em	17	12	15
pair by every	-6	-9
pair by except	16	16
pair by for	25	14	17
pair by from	-14	-15	-18
pair by front	12	9	9
pair by full	-9
pair by gave	19	10	10
pair by get	-8	-9	-6
pair by go	5	9	5
pair by goes	15	21	10
pair by gone	9		5
pair by good	-6	-5	-5
pair by got	8	36	21
pair by gotta	7	11	8
pair by guys	6
pair by had	-6	-5
pair by hand	8
pair by hang	-12	-17	-11
pair by has	28	14	19
pair by hasn't	-8
pair by have	13	6	14
pair by head	6	6	6
pair by her	24	23	18
pair by here	6
pair by hit	6
pair by house	16	11	11
pair by hung	-9	-9	-6
pair by i	7	13	10
pair by if		-7
pair by in	33	16	29
pair by into	-17	-18	-28
pair by is	-17	-5	-7
pair by it	-76	-50	-59
pair by its			6
pair by just	-15	-6	-6
pair by l	-8
pair by laid	-6
pair by landed	8	5	5
pair by lands	-6
pair by last	12	13	8
pair by left	14	-10	9
pair by let	-8
pair by like	-33	-23	-22
pair by long	6	7	7
pair by low	-25	-13	-13
pair by man		-7
pair by mark	34		13
pair by me	12	7	5
pair by measured	-7
pair by middle	-6
pair by more	-8	-11	-7
pair by move	9	6	6
pair by must		8
pair by my		-6
pair by nailed	6	6	6
pair by need	-18	-26	-15
pair by needs	17	18	12
pair by next	11	7	6
pair by no	-47	-49	-32
pair by number			30
pair by of	5
pair by old	9	11	18
pair by on	36	15	13
pair by once	-6	-9	-5
pair by one's	-19	-12	-12
pair by only	-18	-15	-12
pair by or	-13	-11	-8
pair by our	6	6	6
pair by out	-22	-22	-23
pair by over	17
pair by painted	13
pair by past	-9	-5	-5
pair by please	7	7	7
pair by push	9	9	9
pair by put	-20	-10	-14
pair by quantity	-48	-86	-83
pair by ran	11
pair by right	-7
pair by round		-8
pair by run	-12	-7
pair by running	-6
pair by says		-5
pair by see	-8	-13	-7
pair by sent	5	5	5
pair by set	-7	-8
pair by she	8	7
pair by short	12	5
pair by shut	-5
pair by since	-12	-10	-10
pair by sit	-11	-6	-6
pair by size	-10	-6	-6
pair by so	-8	-8	-5
pair by some		-12	-6
pair by still	34	36	26
pair by strip	5
pair by supply	8
pair by swapped	6
pair by term	-44	-38	-51
pair by than	-18	-9	-9
pair by that	36	30	29
pair by the	20	37	31
pair by them		9
pair by there			7
pair by thick	-13	-7	-7
pair by this		5
pair by those		-10	-5
pair by though	7
pair by through	6		9
pair by tight	-9
pair by till	7
pair by time		-21	-7
pair by to	-32	-14
pair by too	-5
pair by took	-8	-5	-5
pair by turned	-14	-7	-7
pair by under	27	10	19
pair by until	9	16	9
pair by up	-27	-17	-8
pair by used	-10	-6	-6
pair by wants	16	34	18
pair by was	-18	-17	-11
pair by went	-10	-8
pair by were	-16	-7	-5
pair by when	-9	-17	-14
pair by where	11	22	18
pair by which		-8
pair by will	-9	-13	-8
pair by with	-27	-22	-5
pair by won't	-12	-9	-9
pair by wrapped	7	7	7
pair by x	-10	-10	-15
pair by you	-8	-22	-15
pair false	13	42	28
pair true		-31	-22
part +1 bare		6
part +1 object	-14	12	8
part +1 opens	-42	-37	-53
part +1 subject	-27	-31	-23
part +1 subject-late	16
part -1 bare	18	12	-11
part -1 object	39	35	33
part -1 opens	-9	10	16
part -1 subject	33	33	44
part -1 subject-late	-35	-31	-34
part -2 bare	-20		-27
part -2 object	5	-19	-26
part -2 opens	15	9	15
part -2 subject	18	15	27
part -2 subject-late	23	23	30
part -3 bare	-11	-7
part -3 object	-11	-27	-27
part -3 opens	12	8	-9
part -3 subject		10	-14
part -3 subject-late	14	10	29
part -4 bare	-15	-11
part -4 object	-27	-16	-25
part -4 opens	41	30	28
part -4 subject		-14	-15
part -4 subject-late	-36	-26	-8
part bare	-25	-20	-39
part bare area	-8	20	30
part bare defect	-50	-48	-58
part bare finish	18		14
part bare fixture		14	-6
part bare material	10	19	-12
part bare part	-8	10	-5
part bare size		-9
part bare surface	16
part bare tells	23	13	10
part bare tool	-12	-7	-12
part bare verbish		-12	7
part bare word	-13	-24	-14
part bare work	-8	-12	-13
part here-after bare			-7
part here-after object	-26	-7	-9
part here-after opens		-15	15
part here-after subject	28	14	6
part here-after subject-late		14	-8
part here-before bare	-6	-16
part here-before object	-13	19	20
part here-before opens	8		-8
part here-before subject	12	7	37
part here-before subject-late	25	10	-16
part object	-50	-26	-41
part object area	18	-16	-10
part object defect	-35	-12	11
part object finish	-30	-24	-37
part object fixture	50	27	38
part object material	-8	-10	-30
part object part	60	45	50
part object size	16	11	20
part object surface	-45	17	-13
part object tells	-30	-17	-11
part object tool	-11	-12	-15
part object verbish	-8	-27	-18
part object word	-51	-18	-35
part object work		6	7
part opens	41	20	24
part opens area	6		-8
part opens defect	11	17	16
part opens finish	-24	-17	-6
part opens fixture	18		-13
part opens material	8		17
part opens part		-9	7
part opens size	-13	-9	-22
part opens surface	7		12
part opens tells		-6
part opens tool	-10	-8
part opens verbish		12	-9
part opens word	27	24	12
part opens work	12	15	25
part subject	52	31	54
part subject area	8	10	-13
part subject defect	-8	-6	6
part subject finish	13	10
part subject fixture	14	17	18
part subject material	29	26	13
part subject size	-10	-8
part subject surface	9		5
part subject tells	-7	-15	-6
part subject tool	12	6	11
part subject verbish	8		17
part subject word		-13	14
part subject work		-5
part subject-late	8
part subject-late area	-22	-10
part subject-late defect	15	7
part subject-late fixture	-27		-12
part subject-late material	13	8	31
part subject-late part		10	-7
part subject-late size		-13	-9
part subject-late surface	27
part subject-late tool	12		6
part subject-late verbish		-6	-11
part subject-late word			-9
person	-28	-32	-24
phrase behind	-33	-35	-66
phrase behind far	13	21	19
phrase nouns 0	-22	-24	-45
phrase nouns 1		6
phrase nouns 2	21	24	38
phrase nouns 3	11	16	17
phrase opens all	-9	-10	-17
phrase opens an		5
phrase opens and	-9	-15	-12
phrase opens another		5
phrase opens anything	-7	-13	-7
phrase opens at		-9	-6
phrase opens back		-6	-7
phrase opens her		-8
phrase opens his	-8	-16	-8
phrase opens if	6	12	6
phrase opens in		10
phrase opens is		-7
phrase opens it	-20	-29	-33
phrase opens mark	8	16	8
phrase opens me	6	13	6
phrase opens my	6	6	6
phrase opens new	10	15	14
phrase opens nothing	10	20	9
phrase opens number		-8	7
phrase opens of		5	9
phrase opens off	-5	-9	-6
phrase opens out	-6	-10	-7
phrase opens quantity		8	-8
phrase opens round	8	16	8
phrase opens term			12
phrase opens that			-10
phrase opens the	16	20	29
phrase opens them			8
phrase opens those			-9
phrase opens to	-15	-20	-26
phrase opens with			12
phrase points em 0			-6
phrase points em 1		5	9
phrase points it 0	-20	-30	-29
phrase points it 1	-9		-28
phrase points it 2	5	6	9
phrase points nothing 0		9	-19
phrase points nothing 1	9	8	19
phrase points nothing 2	23	30	37
phrase points one 0	-7	-21
phrase points one 1		8	6
phrase points one 2	5	5	11
phrase points ones 0		6
phrase points that 0	8	19	6
phrase points that 1	-11	-23	-9
phrase points them 0			7
phrase points them 1	5	9	8
phrase points those 0		-6
phrase size 0	12	20	14
phrase size 1	-25	-51	-27
phrase size 2	-15	-29	-17
phrase size 3	17	37	17
phrase size 4	10	22	8
phrase size 5	8	19
phrase size 6	15	24	22
phrase size 7	-8	-10	-14
phrase subject and behind copula	11	10	22
phrase subject and behind owed	8	16	8
phrase subject and behind past			11
phrase subject and behind present			5
phrase subject copula			7
phrase subject owed		6
phrase subject past	-5	-11
phrase subject present		6
points both -1		7
points both -4		12
points both bare	9	16	10
points both here-after			10
points both here-before		-7
points both object	7	11	11
points both opens	-12	-22	-13
points both subject	5	8	9
points em +1			11
points em -2	-28	-43	-41
points em -3	16	28	19
points em -4			10
points em bare		-5	-7
points em here-before		6	5
points em object	17	30	22
points em opens		-6
points em subject		-10
points em subject-late	-7	-13	-8
points it +1			9
points it -2			13
points it -3	-13	-18	-27
points it -4	-14	-20	-25
points it bare	-26	-50	-27
points it here-after	-25	-39	-38
points it here-before	12		34
points it object	-23	-42	-28
points it opens		7	-16
points it subject	10	7	21
points it subject-late		-7
points none +1	-14	-10	-37
points none -1	7	9	11
points none -2			-9
points none -3	-9	-16	-10
points none -4		6	9
points none bare	7	24
points none here-after	8	11	14
points none here-before	9	17	9
points none object			-18
points none opens	11	9	26
points none subject			16
points none subject-late	-16	-19	-30
points one +1		-7	-7
points one -1	14	22	21
points one -2		-13	22
points one -3	-15	-21	-25
points one -4	10	27
points one bare		-7	-7
points one here-after			-6
points one object	-15	-19	-28
points one opens	8	16	9
points one subject	7		18
points one subject-late	12	20	15
points that +1	-7	-11	-10
points that -1	17	29	23
points that -2	-11	-14	-22
points that -3	14	25	17
points that -4	-11	-19	-14
points that bare	-7	-11	-10
points that here-after	24	38	36
points that here-before	-15	-25	-19
points that object	10	14	18
points that opens	-9	-17	-11
points that subject	16	35	12
points them +1		-6	-9
points them -1	12	19	17
points them -2		8
points them -4		-5	8
points them here-after		7
points them here-before			-9
points them object	18	26	28
points them opens	-6	-11	-6
points them subject	-7		-22
points them subject-late	5	8	7
points they +1		8
points they -1	8	14	11
points they -2	15	33	12
points they -3	-8	-14	-9
points they -4	-10	-29
points they bare		7
points they here-after	-8	-16	-8
points they here-before	8	16	8
points they object	-6	-19
points they opens	13	27	13
points they subject		11
points they subject-late	-7	-15	-7
points this -2	10	21	10
points this -3		-9
points this -4	-7	-13	-7
points this here-after		5
points this object		9
points this subject		-5
points those -1	-23	-34	-36
points those -2	7	8	12
points those -3	12	21	15
points those -4	6	11	7
points those bare		9
points those here-after		-13
points those here-before	6	12	6
points those object	9	21	7
points those opens		-7	7
points those subject	-18	-36	-20
points those subject-late	7	18	7
prep about	-9	-8
prep above	6		10
prep across	20
prep after	-7	-9	-6
prep around		15	17
prep at	-45	-36	-51
prep before	-23	-40	-23
prep behind	7		-17
prep below	-11	-11	-8
prep between	-16	-21	-17
prep by	-86	-85	-91
prep down	9		-11
prep for	-9	11	-11
prep from	-73	-73	-85
prep here-after across	7	7	7
prep here-after after		-5
prep here-after along	8	6	6
prep here-after at		-7
prep here-after before	-12	-23	-12
prep here-after behind	14	15	8
prep here-after below	-8
prep here-after by	-25	-24	-18
prep here-after for	9	28	10
prep here-after from	-29	-24	-33
prep here-after in	54	7	13
prep here-after into	-7	-10	-21
prep here-after near	-13	-6	-6
prep here-after next		-9
prep here-after of	37	26	32
prep here-after off	8		16
prep here-after on	30	15	30
prep here-after over	19	8	9
prep here-after past	-12	-6	-6
prep here-after through	16	8	7
prep here-after to	-16	13	9
prep here-after toward	-9
prep here-after under	12
prep here-after up		9
prep here-after with	-29	-6	-14
prep here-before at	12	15	8
prep here-before before		-8
prep here-before behind	9
prep here-before by	-19		-8
prep here-before for	7
prep here-before in			5
prep here-before of	19	10	8
prep here-before on	6		8
prep here-before over	10	6	6
prep here-before to	5	11	7
prep in	17		-12
prep inside	8	14	8
prep into	-22	-22	-35
prep near	-15	-17	-12
prep next	-6	-11
prep of	30	9	5
prep off	20		12
prep on	15	13	-6
prep other about		-10
prep other above	6		18
prep other after		-6	-5
prep other along	-8	-8	-12
prep other around	6	12	13
prep other at	-60	-45	-61
prep other before	-7	-8
prep other behind	-16	-26	-30
prep other below		-6
prep other between	-19	-26	-20
prep other by	-47	-62	-70
prep other down	11		-11
prep other for	-27	-25	-26
prep other from	-39	-49	-46
prep other in	-43	-15	-29
prep other inside	9	14	8
prep other into	-10	-6	-9
prep other near		-10	-5
prep other of	-22	-22	-32
prep other off	13
prep other on	-21		-45
prep other out	-17	-20	-24
prep other over	-21	-19	-35
prep other past		-6
prep other through	21	7	8
prep other to	-49	-33	-41
prep other toward	-5
prep other under	-31	-44	-32
prep other up	10	26	16
prep other with	-30	-40	-56
prep other without		7
prep out	-27	-23	-23
prep over	9		-18
prep past	-16	-12	-11
prep through	36	15	15
prep to	-61	-7	-21
prep toward	-14	-8	-8
prep towards	-7	-7	-7
prep under	-14	-39	-26
prep up	15	40	26
prep with	-63	-48	-68
prep without		9
rank after 0	29	-8	10
rank after 1	-11		-19
rank after 2	-32	-22	-20
rank after 3	-48	-11	-39
rank after 4	-12	-6	-6
rank before 0	72	-24
rank before 1	-16
rank before 2	-31
rank before 3	-36	-21	-14
rank before 4	71	102	83
rule	-22	6	40
rule done/copula	27	27	53
rule done/none	14	14	29
rule done/past	-6	-6	-13
rule follow-up/imperative		-8
rule follow-up/modal	9	17	9
rule follow-up/none	-11	-21	-11
rule follow-up/owed	11	22	11
rule follow-up/present	-5	-11	-5
rule lacks none 0	-10	-19	-7
rule lacks none 1	12	13	53
rule lacks none 2	-24	-12
rule lacks none 3	-18	-9	-13
rule lacks points 0	-6	-12	-7
rule lacks points 1	9	20	6
rule lacks points 2		7
rule lacks points 3		10
rule problem/absent	-5
rule problem/amiss	9
rule problem/defect	-17	-9	-9
rule problem/defect-after	-15	-7	-7
rule problem/defect-in	-15	-7	-7
rule size 1	-10	-8	-6
rule size 2	-64	-44	-31
rule size 3	-27	-23	-11
rule size 4	55	68	78
rule size 5	8
rule size 8		8
rule word 		-7
rule word 7	-5	-5	-5
rule word back		-5
rule word block	13	6	6
rule word bottom		6
rule word caulk	-9		-5
rule word coat	10	13	26
rule word corner	-7		-5
rule word do		-10
rule word door	-6	-12	-6
rule word doorbell	11	11	11
rule word fill			6
rule word first	23	23	43
rule word float	-5
rule word floor	-11	-13	-12
rule word for		8
rule word four			6
rule word from			-6
rule word garage	-9
rule word go	-6	-12	-6
rule word guy		-6
rule word hinge		6
rule word hole		-5
rule word in	10	21	8
rule word install	46	47	91
rule word kit		-5
rule word knock	14	14	14
rule word left	9
rule word lid	5
rule word line	7	8	5
rule word new	-8	-7	-7
rule word off	-8	-13	-8
rule word old	-13	-15	-10
rule word on	7	7	13
rule word one	10	6	18
rule word out	7	18
rule word paint	14	27	15
rule word pipe	7
rule word pop	10	19	10
rule word primer			-6
rule word pull		7
rule word pulls		7
rule word put	-8	-9	-15
rule word quarter		9
rule word room	12	7	6
rule word round	7	12	7
rule word send		-5
rule word shop	-6
rule word side	-5	-6	-8
rule word six	8	10	13
rule word spot	7	7	7
rule word transformer	12	12	12
rule word twelve			-5
rule word two	-6
rule word window	6	8
says copula	-12	11
says imperative	51		27
says its verb	-50	-91	-59
says modal	-6		9
says none	18		-11
says owed	11	9
says present	-12	-10	-11
sentences -1	-79	-99	-64
sentences -1 bare	-51	-48	-54
sentences -1 object			15
sentences -1 opens	-23	-30	-22
sentences -1 subject	-33	-31	-26
sentences -1 subject-late	13		16
sentences -2	-101	-96	-126
sentences -2 bare	-41	-42	-42
sentences -2 object	-23	-18	-28
sentences -2 opens	-16	-17	-23
sentences -2 subject	-43	-43	-48
sentences -2 subject-late			-7
sentences 1	-66	-47	-47
sentences 1 bare	-10
sentences 1 object	-22	-10	-12
sentences 1 opens	-16	-15	-14
sentences 1 subject	-19	-12	-17
sentences 1 subject-late	-7	-10	-7
size 1	-67	-64	-77
size 1 far	-30	-16	-15
size 1 far+here		-12
size 1 here	-64	-48	-48
size 1 outside 0	-51	-42	-33
size 1 outside 1	-48	-39	-30
size 1 pair		-12	-7
size 2		-20	-12
size 2 far	11	-5	-7
size 2 far+here		-10	-26
size 2 far+phrase	-19	-28	-29
size 2 here	29	11	11
size 2 outside 0	-7	-17
size 2 outside 1	5	-5	-17
size 2 outside 2	-12	-36	-38
size 2 pair	-36	-17	-10
size 2 phrase	-12	-19	-17
size 2 told		-9
size 3	7	8
size 3 far		20
size 3 far+here	-28	-16
size 3 far+phrase			-11
size 3 here	32	12	19
size 3 outside 0	22	9	6
size 3 outside 1	35	20
size 3 outside 2	-35	11	19
size 3 outside 3	-21	-30	-41
size 3 pair	19	22	28
size 3 phrase	-19	-26	-30
size 3 told		7	-17
size 4	52	28
size 4 far	-7	-38	-21
size 4 far+here	23	8
size 4 far+phrase	-27	-37	-48
size 4 here	39	24	23
size 4 outside 0	36	59	40
size 4 outside 1	9	8	-26
size 4 outside 2	52	40	60
size 4 outside 3	-28	-55	-68
size 4 outside 4	-5	-16	-5
size 4 pair	26	51	40
size 4 phrase			-6
size 4 told	18	28	28
size 5	36	39	49
size 5 far	10	-5	11
size 5 far+here	-13	13	11
size 5 far+phrase		-14	16
size 5 here	15	7
size 5 outside 0	48	38	14
size 5 outside 1	12	29	25
size 5 outside 2	30	23	15
size 5 outside 3	-15		37
size 5 outside 4	-26	-38	-31
size 5 pair	23	16
size 5 phrase	15	27	18
size 5 told	6	15
size 6	30	38	19
size 6 far	-18	-22	-27
size 6 far+phrase	23	45	26
size 6 outside 0	25	21	16
size 6 outside 1	6	6	10
size 6 outside 2		14	-7
size 6 outside 3	47	49	50
size 6 outside 4	-40	-40	-45
size 6 pair	17	10	8
size 6 phrase	9	17	9
size 6 told	-5	-13
size 7	24	30	49
size 7 far	-32	-30	-31
size 7 far+here	13	10	12
size 7 far+phrase	52	80	78
size 7 outside 0			6
size 7 outside 3	6	9	14
size 7 outside 4	10	15	25
size 7 pair			6
size 7 told	-22	-43	-22
sort CONJ		7	6
sort COP	-8	-16	-6
sort DET	23	42	27
sort MOD		7
sort PREP	-21	-18	-12
sort PRON		5	-17
sort SUB		9
sort Vbuyb		-7
sort Vhaveb	-5	-11	-5
sort Vmeasureb	6
sort Vmeasurebp		-6
sort Vmeasurei	-19	-13	-15
sort Vmoveb	-8	-6	-23
sort Vmovei		-8	-6
sort Vmovep	-14	-10
sort Vmovepp		6	12
sort Vmoves	5	10
sort Vneeds	-9
sort Votherb	10	8	8
sort Votheri	16	7	10
sort Votherpp	6
sort Vreturnb	10	7	16
sort Vsayb	-23	-13	-12
sort Vsaypp	-9	-14	-14
sort Vworkb	34	72	60
sort Vworkbp	15	8	6
sort Vworkbpp	-16	-15	-8
sort Vworki	11	12	17
sort Vworkpp	7	12
sort Vworks	15		10
sort w	-14	-13	-17
sort w's	-37	-36	-37
sort wed			6
sort wing	-13	-26	-12
sort wly	-20	-25	-20
stands after	-49	-102	-108
stands after 0 of 0	-12	-27	-34
stands after 0 of 1	11	-9	-11
stands after 0 of 2	-31	-28	-27
stands after 0 of 3	-7	-14	-9
stands after 1 of 0	-14	-20	-15
stands after 1 of 1	-10	-6	-14
stands after 1 of 2	-15	-13	-12
stands after 1 of 3	25	12	12
stands after 2 of 0		-6
stands after has 0	-29	-50	-51
stands after has 1		-14	-22
stands after has 2	-41	-37	-35
stands after has 3	11
stands after points it	-29	-45	-42
stands after points nothing	5	-23	-31
stands after points that		-5
stands after points them		-5	-8
stands after points they		-9	-5
stands before	13	32	30
stands before 0 of 0	34	26	48
stands before 0 of 1	-9	-47	-37
stands before 0 of 2	-53	-79	-64
stands before 0 of 3	-62	-48	-60
stands before 1 of 0		19	29
stands before 1 of 1	6	-23	-15
stands before 1 of 2		6	-14
stands before 1 of 3		8
stands before 2 of 0	19	28	10
stands before 2 of 1	-16	-33
stands before 2 of 2	-19		-21
stands before 2 of 3		9
stands before 3 of 0	29	41	22
stands before 3 of 1	-53	-52	-49
stands before 3 of 2	13	9	30
stands before 3 of 3		-7
stands before 4 of 0	-44	-53	-51
stands before 4 of 1	43	105	75
stands before 4 of 2	50	49	49
stands before 4 of 3	46	39	45
stands before has 0	38	62	66
stands before has 1	-9	-19	-6
stands before has 2			-12
stands before has 3		6	-10
stands before points both	6	13
stands before points it	-6	-10	-10
stands before points it'll	-8	-16	-8
stands before points it's	-7	-24	-17
stands before points nothing	-14
stands before points one	12	27	11
stands before points ones			7
stands before points that	15	29	17
stands before points that's			7
stands before points them	15	20	24
stands before points those	13	27	10
stands here	43	41	36
stands here 0 of 1	37	52	42
stands here 0 of 2	43		30
stands here 0 of 3	103	48	38
stands here 1 of 2	-19	6	-9
stands here 1 of 3		-14
stands here 2 of 3	-47	-28	-17
stands here 3 of 3	-87	-37	-62
stands here 4 of 3	-11	-6	-6
stands here has 1	37	52	42
stands here has 2	25	10	22
stands here has 3	-15	-22	-28
stands here points both	5		17
stands here points it	-9	-28
stands here points it'll		6
stands here points it's	6	18	10
stands here points nothing	45	42	29
stands here points one			5
stands here points ones			-6
stands here points that	-9	-18	-8
stands here points that's	12	23	8
stands here points them		8	-11
stands here points they		7
stands here points they're		6	6
stands here points this		8
stands here points those	-9	-19	-5
stands-off-after	16	8	8
subject none +1	-18	-9	-9
subject none -2	26	13	13
subject none here-after	5
subject none here-before	24	12	12
subject own +1	7
subject own -1	19	10	10
subject own -2	10	5	5
subject own -3	-9
subject own -4	14	7	7
subject own here-after	-38	-19	-19
subject own here-before	15	7	7
subject person -1	6
subject person -3	-10
subject person here-after	13	7	7
subject pointer +1	-27	-14	-14
subject pointer -2	9
subject pointer -3	19	10	10
subject pointer -4	-18	-9	-9
subject pointer here-after	25	13	13
subject pointer here-before	-23	-11	-11
subject tells -1	-7
subject tells -3	12	6	6
told as bought before	6		6
told as done after	-9	-17	-9
told as done before	-5	-11	-5
told as done here	10	21	10
told as fixed after	-9	-13	-14
told as fixed before		-25	19
told as have before	55	75	45
told as have here	24	26	19
told as need after	13		5
told as need before	-25	-32	-31
told as need here	18	37	19
told as open after	-28	-38	-47
told as open before	-10	9	-50
told as open here	10	17	13
told as ordered before	13	18	19
told as used after	28	27	15
told as used before	-25	-15
told as used here	18	17	13
told done	-14	-28	-14
told done 0 far	-9	-19	-9
told done 0 touches		-6
told done 1 far		9
told done 1 near	-12	-25	-12
told fixed far	-35	-57	-49
told fixed near	-5		-12
told fixed over	12	14	21
told fixed touches		11
told open far		9
told open near	7	16	5
told open touches	9		24
told problem			-6
told problem 0 far	-26	-32	-50
told problem 0 near	9	18	8
told problem 0 over	14	16	27
told problem 0 touches	10	12	17
told problem 1 far		-6
told problem 1 near	-8	-8	-16
told problem 1 over			-7
told size 1		-9
told size 3	-13	-15	-28
told size 4		-9
touches-after	-22	-11	-11
touches-before	21	11	11
unit none defect	-62	-31	-31
unit none fixture	42	21	21
unit none material	32	16	16
unit none part	42	21	21
unit none tells	-13	-7	-7
unit none verbish	12	6	6
unit none word	-22	-11	-11
unit none work	-7
use buy	47	51	48
use have	26		26
use measure	9	-6
use move	-23	-13	7
use need	25	20	10
use other			20
use say		16
use see		-6	-7
use use	-6	-6	-7
use work	-20	-15
verb behind #	27	46	36
verb behind a		7
verb behind all			-8
verb behind and	-8	-8	-15
verb behind are	8		20
verb behind be	16	31	16
verb behind been	5	6	10
verb behind before		8
verb behind both			-6
verb behind can		6
verb behind can't		8
verb behind come	10	20	10
verb behind don't	7	14	7
verb behind dry			8
verb behind get	15	31	15
verb behind gonna		9
verb behind gotta	-8	-15	-8
verb behind he	-9	-12	-14
verb behind he'll	-6	-13	-6
verb behind i		-18	22
verb behind i'd	-7	-16	-7
verb behind i'll	8	16	8
verb behind i've			5
verb behind in	-15	-15	-29
verb behind is	8		26
verb behind it	-7	-7	-13
verb behind it's		-15	12
verb behind must	-7	-14	-7
verb behind needs		-8
verb behind no	-9	-13	-15
verb behind nobody	8	16	8
verb behind she	-9	-14	-14
verb behind should	-8	-15	-8
verb behind term	-37	-69	-44
verb behind that		-6
verb behind the	-14	-24	-19
verb behind they	-20	-41	-20
verb behind they're		-7
verb behind time		6
verb behind to	42	84	42
verb behind want	5	11	5
verb behind wants	8	15	8
verb behind was	-10	-10	-20
verb behind we	9	13	14
verb form b main	24	42	31
verb form b side		9	-20
verb form bp main		5
verb form bp side		5
verb form bpp main	-9		-26
verb form bpp side	25	41	34
verb form i main	13	26	13
verb form i side		11
verb form p main	-14	-24	-17
verb form p side		-8	7
verb form pp main	20	11	48
verb form pp side		-17	18
verb form s main	-22	-39	-27
verb form s side	-10	-12	-19
verb lemma ask imperative	8	17	8
verb lemma ask present	8	15	8
verb lemma bed past			8
verb lemma bend past			7
verb lemma bolt copula	-7	-7	-15
verb lemma bolt past	-11	-11	-22
verb lemma box copula		7
verb lemma brace past	5	5	5
verb lemma bring imperative		7
verb lemma call past	-7	-7	-12
verb lemma call present	6	12	6
verb lemma cap past			7
verb lemma caulk past			6
verb lemma change present	7	11	10
verb lemma check imperative	6	13	6
verb lemma check past			6
verb lemma check present			6
verb lemma clamp past			-6
verb lemma clean past			8
verb lemma clear past			9
verb lemma close imperative	8	16	8
verb lemma close present	-13	-23	-13
verb lemma come copula	-8	-16	-8
verb lemma cut copula			7
verb lemma cut imperative		8
verb lemma cut modal	7	14	7
verb lemma cut none		7	5
verb lemma cut owed		7
verb lemma cut past	-8	-7	-18
verb lemma cut present	6	12	6
verb lemma do copula			12
verb lemma do none	-9	-20	-6
verb lemma dry copula		-6
verb lemma dry imperative	-7	-14	-7
verb lemma dry none		-5	-8
verb lemma dry present		-7
verb lemma fill past	8	8	17
verb lemma find past	-7	-7	-10
verb lemma finish imperative		8
verb lemma fit past			6
verb lemma fix past			5
verb lemma fre past	5	5	11
verb lemma get imperative	-19	-38	-19
verb lemma get modal		-6
verb lemma get owed	-14	-27	-14
verb lemma get past		-5
verb lemma glue past	8	8	15
verb lemma go copula	-16	-32	-16
verb lemma go modal	-6	-12	-6
verb lemma go none	-11	-21	-13
verb lemma go owed	-19	-38	-19
verb lemma go past	-10	-11	-21
verb lemma go present	-11	-23	-9
verb lemma hang copula	9	10	16
verb lemma hang past	7	7	14
verb lemma haul past	-6	-6	-12
verb lemma hold imperative		-8
verb lemma hold past	-8	-8	-15
verb lemma lay imperative	-5	-11	-5
verb lemma lay past	-8	-8	-14
verb lemma leave copula	-5	-9	-5
verb lemma leave imperative	-13	-25	-13
verb lemma leave past	-14	-20	-21
verb lemma level copula	-5	-5	-11
verb lemma level past	-9	-9	-19
verb lemma lift past			6
verb lemma look imperative	6	12	6
verb lemma look modal		9
verb lemma look past	5	5	5
verb lemma look present	7	14	7
verb lemma make imperative		-10
verb lemma make past			-8
verb lemma make present		-6
verb lemma measure past			7
verb lemma miss none		-6
verb lemma move past	-6	-10	-9
verb lemma nail past			5
verb lemma open past	5	8	7
verb lemma open present	-13	-23	-15
verb lemma order past		-8
verb lemma owe present	7	15	7
verb lemma pack past			7
verb lemma paint modal	6	12	6
verb lemma pass past			8
verb lemma patch imperative	5	9	5
verb lemma patch modal		7
verb lemma patch past			6
verb lemma plug past			-8
verb lemma pull copula	-8	-8	-8
verb lemma pull imperative		5
verb lemma pull owed	-6	-11	-6
verb lemma pull past	-12	-12	-24
verb lemma put none	-13	-18	-20
verb lemma put owed	-6	-12	-6
verb lemma put past	-8	-6	-16
verb lemma rake past	-5	-5	-5
verb lemma redo imperative		7
verb lemma redo past			8
verb lemma replace past	7	7	13
verb lemma reset imperative	5	5	5
verb lemma reset none			6
verb lemma return none		5
verb lemma rip past			9
verb lemma run past	-9	-14	-12
verb lemma run present		5
verb lemma sand imperative		6
verb lemma sand modal	8	15	8
verb lemma sand owed		6
verb lemma sand present		-6
verb lemma screw copula			-8
verb lemma screw past	-6	-6	-12
verb lemma scribe copula			5
verb lemma seal past	8	8	13
verb lemma see modal		6
verb lemma send copula		5
verb lemma send imperative		9
verb lemma send modal		8
verb lemma send none		5
verb lemma set copula			10
verb lemma set none			5
verb lemma set past	5		14
verb lemma shim past			-5
verb lemma shut past			6
verb lemma sister past			9
verb lemma sit owed		-6
verb lemma splice past	6	6	11
verb lemma stand copula			-7
verb lemma start none		-9
verb lemma start present	6	11	6
verb lemma stick past			-7
verb lemma straighten past			9
verb lemma swap imperative	6	11	6
verb lemma swap past			6
verb lemma take imperative	9	19	9
verb lemma take owed		7
verb lemma take present	6	10	8
verb lemma tear past			-7
verb lemma tell past	-8	-17	-6
verb lemma test none			5
verb lemma tighten past	5	5	10
verb lemma top copula			-7
verb lemma top past			-8
verb lemma touch present		-6
verb lemma touch up imperative		5
verb lemma use past			-7
verb lemma wash past			6
verb lemma wire past			6
verb main	16	23	24
verb main imperative	24	50	23
verb main modal	8	17	8
verb main past	-20	-53	-11
verb main present		8
verb no rule	19	23	35
verb none	-89	-129	-139
verb none of 0		11	-8
verb none of 1	-50	-77	-73
verb none of 2	-34	-53	-50
verb none of 3	-7	-11	-10
verb none turn	-14	-18	-23
verb nth 0	33	38	64
verb nth 0 of 1	34	54	48
verb nth 0 of 2		-22	13
verb nth 0 of 4			5
verb nth 1	-5	5	-22
verb nth 1 of 2		12
verb nth 1 of 3			-15
verb nth 1 of 4		-9	-5
verb nth 2			-8
verb nth 2 of 3		6	-5
verb nth 3		9
verb nth 3 of 4		10
verb of rule	16	32	16
verb of rule do		-5
verb of rule finish			-9
verb of rule install	-7	-15	-6
verb of rule send	24	48	24
verb other rule	-24	-38	-34
verb particle	-26	-16	-64
verb same rule	44	72	61
verb says ask	20	39	20
verb says balance			6
verb says bed	6	6	11
verb says bend		-6
verb says bolt	-11	-11	-24
verb says brace			9
verb says buy		-8
verb says call	5	10	6
verb says cap	5	5	9
verb says caulk			7
verb says change	10	16	14
verb says check	19	35	24
verb says clamp	-8	-8	-12
verb says clean	5		10
verb says clear			11
verb says complete			-6
verb says cut	8	23
verb says cut in	9	12	14
verb says cut out	-5		-16
verb says decide		7
verb says do		-15	9
verb says drill		8	7
verb says drip			-8
verb says drop		7
verb says dry	-29	-47	-40
verb says dry in	6	6	12
verb says exchange		8
verb says file			6
verb says fill	18	25	30
verb says find	-10	-15	-14
verb says finish		8
verb says fit	9	16	11
verb says fix			7
verb says forget		-7
verb says fre			9
verb says get	-37	-75	-37
verb says give	-8	-16	-9
verb says glue	12	14	20
verb says glue down			-7
verb says go	-20	-33	-28
verb says go back	-17	-33	-17
verb says go down		-6
verb says go in	-10	-19	-11
verb says go on	-9	-19	-9
verb says grab		-7
verb says grind		10
verb says grout	6	11	8
verb says hang	15	17	28
verb says haul	-5	-5	-11
verb says hold	-13	-17	-22
verb says lay		-8
verb says leave	-26	-43	-36
verb says leave on	-5	-10	-5
verb says level	-16	-17	-30
verb says lift			7
verb says look	21	41	21
verb says make	-13	-23	-16
verb says measure	7	9	11
verb says miss		-6
verb says move		6
verb says nail			7
verb says notch			8
verb says open	-16	-32	-15
verb says open up	6	6	6
verb says owe	7	15	7
verb says paint	9	18	9
verb says pass	6	8	11
verb says patch	11	18	15
verb says pick up	7	14	7
verb says place			-7
verb says plane	7	12	8
verb says plug			-7
verb says plumb			-6
verb says pop	-6	-6	-6
verb says promise		-5
verb says pull	-19	-26	-32
verb says pull out			-9
verb says put		-13
verb says put in	-27	-37	-44
verb says quit	-6	-6	-6
verb says quote		6
verb says recut		7
verb says redo	8	12	11
verb says rehang		8	7
verb says replace	12	17	18
verb says reset	12	15	22
verb says return	6	13	5
verb says rip	8	9	15
verb says run			-9
verb says sand	11	18	15
verb says scrape	8	14	10
verb says screw			-6
verb says screw down	-6	-6	-13
verb says scribe		6	7
verb says seal	14	20	22
verb says send		7
verb says send back	8	15	8
verb says set	7		22
verb says shift		-7
verb says shim			-6
verb says sister	9	12	16
verb says sit	-8	-15	-7
verb says skim		7	6
verb says sort	-9	-9	-9
verb says splice	6	6	11
verb says stand		12
verb says start	7	14	7
verb says stick	-7	-12	-7
verb says strip		5	9
verb says stuff	-6	-9	-10
verb says swap	10	16	13
verb says swing		-6
verb says take			-6
verb says take back	12	22	12
verb says take out	8	14	9
verb says talk		5
verb says tear	-6	-6	-6
verb says tell		-6
verb says test	16	21	28
verb says tighten	6	6	11
verb says top	-17	-21	-31
verb says touch		-8
verb says touch up		6
verb says trim			5
verb says trip	-9	-9	-9
verb says unopen		-7
verb says use	-7	-9	-13
verb says wash	7	11	10
verb says work			-8
verb says zip	-6	-6	-13
verb side	14	27	15
verb side copula		-17
verb side imperative	7	19
verb side owed	9	18	9
verb side past	6	16
verb term defect	-28	-28	-55
verb term finish	-11	-19	-13
verb term material	24	43	28
verb term part	5	14
verb term surface	5	9	5
verb turn	14	14	28
verb turn back copula	-7	-10	-12
verb turn back imperative	-5	-10	-7
verb turn back modal	11	22	11
verb turn back none	-6	-6	-12
verb turn back owed	-9	-19	-9
verb turn back past	-12	-11	-24
verb turn back present	6	14	6
verb turn come back	-35	-52	-52
verb turn done copula	-9	-10	-16
verb turn done none			-13
verb turn down copula	10	11	19
verb turn down owed		-8
verb turn finish	-12	-6	-30
verb turn good copula	-11	-11	-17
verb turn in copula	14	6	36
verb turn in none		6	-7
verb turn in past	6	6	11
verb turn in present	8	17	8
verb turn install	34	56	48
verb turn new copula	-16	-21	-26
verb turn new imperative	11	21	13
verb turn new modal	7	13	7
verb turn new none	35	31	73
verb turn new owed	-38	-75	-38
verb turn new past	27	25	55
verb turn new present	-9	-16	-12
verb turn off copula	-9	-15	-12
verb turn off none	-5		-12
verb turn off owed	11	22	11
verb turn on copula			-6
verb turn on none	-6		-17
verb turn on present	10	20	10
verb turn out copula			-5
verb turn out none			-6
verb turn out present	8	15	8
verb turn replace	17	-17	68
verb turn take back	12	31
verb turn take down		-8
verb turn take off	-6		-16
verb turn take out		7	-6
verb turn up copula			8
verb turn up none	-6	-12	-6
verb turn up past			10
verb use buy main	-8	-16	-9
verb use buy side		6
verb use measure main	-8	-10	-14
verb use measure side	-12	-19	-16
verb use move main	-66	-117	-82
verb use move side	-32	-60	-35
verb use other main	-30	-59	-30
verb use other side	-16	-25	-24
verb use return main	9	18	10
verb use say main	13	27	12
verb use say side	8	19	6
verb use see main	32	59	37
verb use see side	16	33	16
verb use use main	-8	-10	-13
verb use work main	81	136	110
verb use work side	43	70	62
where +1	-63	-48	-64
where -1	44	51	46
where -2	34	22	16
where -3			-16
where -4	-22	-30	-18
where here-before	30	20	34
whole after at defect	9
whole after at surface	-11	-6	-6
whole after by defect	-10	-5	-5
whole after end defect	-8
whole after for defect	-7
whole after from defect	5
whole after in material	8
whole after of defect	-10	-5	-5
whole after on defect	-13	-6	-6
whole after on material	8
whole after on surface	8
whole after out defect	-7
whole after quantity defect	-13	-6	-6
whole after quantity material	12	6	6
whole after quantity part	-6
whole after quantity surface	14	7	7
whole after term finish	-7
whole after term material	10
whole after term word	9
whole after with defect	-5
whole after word defect	12	6	6
whole after word material	-9
whole after word surface	5
whole after word word	-18	-9	-9
whole article a	-37	26	-7
whole article none		-23	-15
whole article other	-15	-23	-26
whole article the	40	31	43
whole behind about -2	-6
whole behind about -3	-9
whole behind along -3	6
whole behind along here-before	6
whole behind at -2	-23	-12	-12
whole behind at here-before	16	8	8
whole behind behind -1	5
whole behind behind -4	-5
whole behind behind here-before	7
whole behind by -1	-5
whole behind by -2	18	9	9
whole behind by -4	48	24	24
whole behind by here-after	-14	-7	-7
whole behind by here-before	-9
whole behind down -1	-11	-6	-6
whole behind down here-before	6
whole behind end +1	-16	-8	-8
whole behind end -1	-20	-10	-10
whole behind end -2	-6
whole behind end -4	-51	-25	-25
whole behind end here-before	-20	-10	-10
whole behind for -1	15	7	7
whole behind for -2	9
whole behind for -3	-9
whole behind for here-after	-7
whole behind for here-before	8
whole behind from -2	-14	-7	-7
whole behind from -3	7
whole behind from -4	6
whole behind from here-before	10
whole behind in -1	-15	-8	-8
whole behind in -2	-18	-9	-9
whole behind in -3	-9
whole behind in here-after	10	5	5
whole behind in here-before	15	7	7
whole behind mark -3	-6
whole behind mark here-before	12	6	6
whole behind number -1	-10
whole behind number -3	13	7	7
whole behind number here-after	9
whole behind number here-before	5
whole behind of -1	20	10	10
whole behind off -2	-9
whole behind off -4	13	7	7
whole behind off here-before	-9
whole behind on -1	30	15	15
whole behind on -3	13	6	6
whole behind out +1	14	7	7
whole behind out -1	-20	-10	-10
whole behind out -2	14	7	7
whole behind out -4	10	5	5
whole behind out here-after	-28	-14	-14
whole behind out here-before	7
whole behind over -3	-7
whole behind over here-after	10
whole behind quantity +1	-28	-14	-14
whole behind quantity -2	-21	-11	-11
whole behind quantity here-before	20	10	10
whole behind short -2	-8
whole behind term +1	-12	-6	-6
whole behind term -1	31	15	15
whole behind term -2	-24	-12	-12
whole behind term -3	39	20	20
whole behind term -4	10
whole behind term here-after	30	15	15
whole behind term here-before	-18	-9	-9
whole behind through -2	-10	-5	-5
whole behind through -4	-10
whole behind to -3	16	8	8
whole behind to -4	-6
whole behind to here-after	5
whole behind under -3	-8
whole behind under here-after	8
whole behind under here-before	10
whole behind up +1	-8
whole behind up -2	10
whole behind up -3	-9
whole behind with -1	-24	-12	-12
whole behind with -3	-9
whole behind with here-after	-8
whole behind word +1	8
whole behind word -1	18	9	9
whole behind word -2	41	20	20
whole behind word -3	-16	-8	-8
whole behind word -4	14	7	7
whole behind word here-after	-19	-10	-10
whole behind word here-before	-29	-15	-15
whole behind-verb	5	13	22
whole between 	8
whole between has	10	5	5
whole between has a	-11	-6	-6
whole between have	5
whole between i	7
whole between is	-8
whole counted bare	20	45	21
whole counted count	-6	-20	-8
whole counted current	-25	-14	-14
whole counted length		-38	-19
whole counted pack	33	30	16
whole counted time	5		8
whole counted voltage	9	8	8
whole counted volume	-13	-15	-10
whole counted weight	14	9	8
whole does add defect	5	5	5
whole does ask material		8
whole does be area	-16	-16	-31
whole does be finish		-6
whole does be fixture	-8	-9	-15
whole does be material	6	20
whole does be part	-10	-8	-22
whole does be surface	11	23	10
whole does be tells		-7
whole does be verbish	-19	-29	-27
whole does be word		-7
whole does be work			-6
whole does book word	9	18	9
whole does bring defect	-6	-11	-6
whole does bring fixture	-9	-13	-9
whole does bring verbish		6
whole does bring word	6	14	6
whole does call defect	-7	-7	-7
whole does call material		-7
whole does caulk word		-5
whole does change fixture			7
whole does change part		-5	-7
whole does change surface	-6	-6	-6
whole does change word	9	17	9
whole does check fixture	8	8	8
whole does check material		-5
whole does check surface			-7
whole does clean material			-5
whole does clean part			-8
whole does clean word			8
whole does close material	-6	-11	-6
whole does come area		7
whole does come fixture	7	13	7
whole does come material	6	13	6
whole does come size		-5
whole does come word	-7	-13	-7
whole does cut area			7
whole does cut defect	24	43	30
whole does cut fixture		9
whole does cut part		-12
whole does cut size			-6
whole does cut surface	16	21	29
whole does cut tells	10	10	10
whole does cut verbish		-9
whole does cut word	-9	-19	-8
whole does dig defect	5	5	5
whole does do fixture		16
whole does do material	-12	-29	-8
whole does do part	5	8	8
whole does do surface	7	13	7
whole does do word		-8	-7
whole does don't material		8
whole does drill part			6
whole does drop part	11	22	11
whole does drop word	-9	-16	-9
whole does dry word	-11	-21	-11
whole does fill area			-7
whole does fill defect	7	10	10
whole does fill fixture	-5	-5	-8
whole does fill size	6	6	9
whole does fill surface	-6	-9	-9
whole does fill word			-7
whole does finish material	11	11	16
whole does finish surface			5
whole does finish word	-7	-7	-13
whole does fit material	10	10	10
whole does fix part	12	12	24
whole does fix word	-10	-10	-16
whole does flip part			7
whole does get area	-10	-17	-12
whole does get defect	17	26	25
whole does get fixture			10
whole does get material	-10	-10	-22
whole does get part		8
whole does get size			-6
whole does get surface		7
whole does get verbish		-7	-6
whole does get word			10
whole does give material			7
whole does glue area	6	6	15
whole does glue material			-10
whole does glue part			6
whole does glue word	-8	-11	-13
whole does go defect		9
whole does go fixture		11
whole does go material		-5	-7
whole does go part	-13	-20	-19
whole does go surface	-6	-14
whole does go verbish	-6	-12	-6
whole does go word	-9	-16	-11
whole does gotta word		7
whole does grind defect	8	8	8
whole does grind surface	7	7	7
whole does hang fixture	5	8	7
whole does hang material		-5
whole does hang surface			-5
whole does hang verbish	-5	-9	-5
whole does hang word		5
whole does has word		-8
whole does have finish	-11	-11	-11
whole does have material		7	6
whole does have part	9	11	15
whole does have surface	9	17	9
whole does hit defect	7	7	7
whole does hit surface	-6	-6	-6
whole does hold part	-5	-5	-5
whole does i'll word		-7
whole does keep material		7
whole does keep word		6
whole does knock word	-7	-7	-7
whole does lay surface			7
whole does leave area		9
whole does leave defect		-7
whole does leave fixture	-8	-14	-8
whole does leave material	25	48	25
whole does leave part		9
whole does leave surface	7	8	7
whole does leave tool		-7
whole does leave word	-15	-31	-13
whole does let material	8	17	8
whole does let verbish		-6
whole does let word	-7	-13	-7
whole does like word		8
whole does look defect		-10
whole does look material		-6
whole does look part	5	10	5
whole does look surface	5	10	5
whole does make area	8	8	8
whole does make material		-9
whole does make surface	6	6	12
whole does measure word	8	8	16
whole does move material	-7	-13	-9
whole does move part			-5
whole does move word	6		12
whole does need fixture	11	21	11
whole does need material		5
whole does need part	7	13	7
whole does need size		6
whole does need surface		-8
whole does need tool		6
whole does need verbish		9
whole does open part	-6	-12
whole does order fixture		9
whole does order material		-8
whole does owe word	7	13	7
whole does pack defect	-5	-5	-6
whole does pack material			7
whole does pack surface			6
whole does paint material		-8
whole does paint word	7	14	6
whole does patch material		-6
whole does patch surface	6	6	6
whole does pick part		5
whole does pick word		6
whole does plug word	-6	-6	-7
whole does pour material	8	8	8
whole does prime material	-6	-11	-7
whole does pull fixture			-5
whole does pull material		10
whole does pull part	-9	-14	-14
whole does pull word			-5
whole does put area	8	9	14
whole does put defect		-5	-9
whole does put fixture			6
whole does put material		-6
whole does put part	12	6	32
whole does put surface	-11	-11	-23
whole does put word	-16	-21	-28
whole does rehang material	-8	-8	-8
whole does replace material	-7	-7	-8
whole does return word		6
whole does rip fixture	-8	-8	-8
whole does rip material		10
whole does rip surface		-7
whole does rip word		10
whole does run area	-7	-7	-14
whole does run fixture	6		14
whole does run material			6
whole does run part		-9
whole does run surface	-13	-14	-26
whole does run verbish			-6
whole does run word			10
whole does sand area	7	7	7
whole does sand defect	-6	-9	-6
whole does sand fixture		9
whole does sand surface		7
whole does sand word		6
whole does say area		8
whole does say fixture		-8
whole does say material		-7
whole does say word	8	16	8
whole does scrape material			8
whole does scrape surface	7	7	6
whole does screw material	5	5	8
whole does screw surface			6
whole does seal material	-8	-8	-11
whole does see part		9
whole does see word	6	11	6
whole does send material	-6	-11	-6
whole does send word	6	8	9
whole does shim defect		-6	-7
whole does shim material	-7	-10	-10
whole does shim part			9
whole does sister material	7	7	11
whole does sit material	-5	-8	-5
whole does snake part			8
whole does snug part	-6	-6	-12
whole does spray word			6
whole does start material	10	20	10
whole does start part	6	6	6
whole does stick material	7	7	7
whole does stick word		-6
whole does swap defect	-7	-11	-10
whole does swap fixture			-8
whole does swap material	8	12	11
whole does swap surface		-5	-8
whole does swap word	-6	-8	-11
whole does take area		-6	-8
whole does take defect	-7	-10	-10
whole does take fixture	5		15
whole does take material	-12	-15	-20
whole does take part	6	8	9
whole does take surface	-6	-12	-7
whole does take word		8
whole does tape material			6
whole does tell defect		-6
whole does tell material		-9	-5
whole does tell surface		-7
whole does tell verbish	13	13	13
whole does test part			-5
whole does tighten defect			-5
whole does tighten part			-6
whole does touch material		-5
whole does touch word	6	12	6
whole does turn fixture	5	5	5
whole does turn word	8	8	9
whole does wait fixture	10	20	10
whole does wait part		-6
whole does wait surface		-8
whole does walk surface		-6
whole does want defect	-13	-25	-13
whole does want fixture		-10
whole does want material		7
whole does want part	-8	-17	-8
whole does want surface	9	17	9
whole does want verbish	7	15	7
whole does want word	10	20	10
whole ends Nlabel	11	-15
whole ends PREP		-7
whole ends Q0	-18	-12	-13
whole ends Vmeasureb		-8
whole ends Vmoveb	10	14
whole ends Vmovei	-6	-10	-6
whole ends Vmovep	-15	-14	-9
whole ends Vmoves	7
whole ends Vneedb	-7	-8	-5
whole ends Vneeds		-11	-7
whole ends Votherb	-14
whole ends Votheri	-7	-12	-6
whole ends Vothers	-8	-12	-7
whole ends Vreturnb		-6
whole ends Vsayb	-14	-7	-8
whole ends Vsays		-5
whole ends Vseeb	-9	-8	-7
whole ends Vworkb	21	14	-6
whole ends Vworkbp	23	7	16
whole ends Vworkbpp		5
whole ends Vworki	9	10
whole ends Vworkpp	-5
whole ends Vworks	17	30	24
whole ends plain	13	25	10
whole ends tarea	25	10	-15
whole ends tarea's	-12	-8
whole ends tdefect	-7		-6
whole ends tdefect's	8
whole ends tdefectVotherb	12	43	56
whole ends tdefectVotheri	-13	-24	-18
whole ends tdefectVotherp	-11	-9	-8
whole ends tdefectVotherpp	-11	-17	-15
whole ends tdefectVothers			10
whole ends tdefectVworkb	6	6	6
whole ends tdefectVworkbpp		8
whole ends tdefectVworki	-5	-5	-9
whole ends tdefectVworkp	-7	-10	-9
whole ends tdefectVworkpp	-24	-25	-26
whole ends tdefectVworks	5	11	5
whole ends tfinish	-40	-30	-30
whole ends tfinishVworkb	19	19	6
whole ends tfinishVworkpp		-12	-5
whole ends tfixture	16	22	20
whole ends tfixture's	20	13
whole ends tmaterial		16	44
whole ends tmaterial's	27	40	15
whole ends tmaterialVotherb	9	18	9
whole ends tmaterialVworkb	10	-5
whole ends tmaterialVworki	14	15	6
whole ends tmaterialVworks	-36	-51	-45
whole ends tpart	21	13	13
whole ends tpart's		34	35
whole ends tpartVotherb	-8	-6	-6
whole ends tpartVothers	-9	-18	-9
whole ends tpartVworkb	34	45	36
whole ends tpartVworks	7		-8
whole ends tsurface	19	12	17
whole ends tsurface's		14
whole ends tsurfaceVotherb	-16	-11	-11
whole ends tsurfaceVworkb	-17	-11
whole ends tsurfaceVworki	18	21
whole ends tsurfaceVworks	-9	-8
whole ends ttool	21		7
whole ends ttool's	20	20	14
whole ends ttoolVworkb	-14		-19
whole ends ttoolVworks	-17	-9	-16
whole ends twork		17	7
whole ends verb	-18	-19	-11
whole ends w	-7	-18	-6
whole ends w's	-14		-12
whole ends wed		-12
whole ends wing	-60	-44	-37
whole far after 0	-5	-9	12
whole far after 1	45	48	39
whole far after 13+	-33	-26	-20
whole far after 2	-8	-7	-7
whole far after 3-4	-17	-25	-23
whole far after 5-7	9		-13
whole far after 8-12	-27	-22	-29
whole far before 0	31	27	15
whole far before 1	11	-21	-21
whole far before 13+	-42	6	-10
whole far before 2	32	6
whole far before 3-4	29	12	19
whole far before 5-7	-8		17
whole far before 8-12		14	12
whole figure-between	21	10	10
whole flawed	-28	24	53
whole frame copula -1	-24	9	-27
whole frame copula -2	-10	-7	-23
whole frame copula -3	-8	-9	-15
whole frame copula -4	-52	-47	-36
whole frame copula area			-15
whole frame copula finish	-10	-13	-16
whole frame copula fixture	10	23	7
whole frame copula here-after	-17	-25	-9
whole frame copula here-before		8	12
whole frame copula material	-11	-9	-26
whole frame copula surface	-11	-19	-15
whole frame copula tells			-5
whole frame copula tool	-6	-13	-5
whole frame copula verbish		11
whole frame copula word		-15	12
whole frame imperative +1		-6	-6
whole frame imperative -1	14	16	14
whole frame imperative -2	-12	-7	-15
whole frame imperative -3	-9	-18
whole frame imperative -4	-11
whole frame imperative area	-11	-21	-12
whole frame imperative defect	14	21	22
whole frame imperative finish	9	16	9
whole frame imperative fixture	7	22
whole frame imperative here-after	11	14	14
whole frame imperative here-before	7	9	5
whole frame imperative material	-6	-8	-10
whole frame imperative part	-16	-32	-15
whole frame imperative size		6	7
whole frame imperative surface			8
whole frame imperative tells	10	19	10
whole frame imperative verbish	-8	-15	-9
whole frame imperative word	-7	-15	-6
whole frame modal +1		-7
whole frame modal -1	22	14	9
whole frame modal -2	-11	-5
whole frame modal -3	-11
whole frame modal -4		-6	-7
whole frame modal area	5	9	7
whole frame modal defect	14	26	14
whole frame modal finish		-9
whole frame modal fixture	-10	-19	-10
whole frame modal here-after	7	10	5
whole frame modal here-before	8
whole frame modal material			9
whole frame modal part	19	38	19
whole frame modal size	-11	-21	-11
whole frame modal tells	-8	-16	-8
whole frame modal verbish	5	9	5
whole frame modal word	-11	-17	-18
whole frame none +1		30	10
whole frame none -1	18	15	35
whole frame none -2	17		18
whole frame none -3	34	30	13
whole frame none -4	11		16
whole frame none area	-8	-21
whole frame none defect		-12	7
whole frame none finish	19	35	21
whole frame none fixture		-16	14
whole frame none here-after		-15	6
whole frame none here-before	10	14	5
whole frame none material	17	24	28
whole frame none part		18	-9
whole frame none size			5
whole frame none surface	11	11	25
whole frame none tells	-16	-34	-14
whole frame none tool	11	32
whole frame none verbish	-9	-15	-13
whole frame none word	8	14	12
whole frame none work			7
whole frame owed +1	-7	-8
whole frame owed -1	18	6	11
whole frame owed -2	-15		-9
whole frame owed area	8	17	8
whole frame owed finish	-7	-15	-7
whole frame owed fixture			5
whole frame owed here-after	7
whole frame owed here-before	10	10	8
whole frame owed material	-14	-33	-10
whole frame owed part		-8
whole frame owed size		9
whole frame owed tool		5
whole frame owed verbish		7
whole frame owed word	7	14	7
whole frame owed work	8	15	8
whole frame past +1	-18	-40	-29
whole frame past -1		11	10
whole frame past -2	15	25	23
whole frame past -3		-12	-12
whole frame past -4	34		-16
whole frame past area	-11	-12	-20
whole frame past defect	-10	-18	-13
whole frame past finish	-7	-6	-16
whole frame past fixture		-6	-5
whole frame past here-after	19	19
whole frame past material	10	23	8
whole frame past part	20	18	42
whole frame past size	-11	-20	-13
whole frame past surface	9	21	8
whole frame past tells	7		16
whole frame past tool	-12	-18	-18
whole frame past verbish	-6		-14
whole frame past word	-20	-21	-40
whole frame present +1	-25	-12	-14
whole frame present -1	-15	-20	-8
whole frame present -2	9	24	18
whole frame present -3	-13	-6
whole frame present -4	-15		-13
whole frame present area		9
whole frame present defect	-7	-11	-10
whole frame present finish	-11	-20	-13
whole frame present fixture		12
whole frame present here-after		8
whole frame present here-before		-16
whole frame present material	13	22	17
whole frame present part			11
whole frame present size		6	8
whole frame present surface	-6		-17
whole frame present tells		-6
whole frame present word			15
whole head accent wall	12	12	12
whole head account	-6	-6	-6
whole head adhesive	-9	-9	-8
whole head aerator			5
whole head anchors	-9	-6
whole head apartment	-13	-8	-10
whole head arm	-6
whole head asbestos	9	9	9
whole head aside		-6
whole head b	10	15	21
whole head baby	16	16	16
whole head back bedroom	-6
whole head back door	-7	-6	-8
whole head back edge	-6	-6	-6
whole head back room	8	8	8
whole head back wall	6
whole head backsplash	-8		-8
whole head bad	-11	-12	-9
whole head bag	-6
whole head bakery	-7
whole head ballast	-9	-6	-6
whole head balusters	8	8	7
whole head bar	-5	-9	-7
whole head base	28	37	24
whole head baseboard	20	22	18
whole head basement		-7
whole head bases	7	7	7
whole head basin	-5	-7	-7
whole head bath	8	8
whole head bath fan	11	5	5
whole head bathroom	-6	-13	-10
whole head batt	-12	-6	-6
whole head batts			-12
whole head bay		-11	-11
whole head bed	29	16	17
whole head bedroom	5	10	7
whole head bedroom 2	-13	-6
whole head bedrooms	-12	-5	-6
whole head belly in	-5	-9	-5
whole head belt			8
whole head belt's	7	7	7
whole head bench	12	12	12
whole head bit	-15	-15	-13
whole head black	-11	-10	-11
whole head blade	-8	-9	-5
whole head blank	-5
whole head bled		-7
whole head blinds	10		9
whole head block	11	24	9
whole head blocks	-18	-8	-8
whole head blower	-6	-6	-6
whole head blue	-5	-10	-5
whole head blue tape	-11	-8	-8
whole head board	21	18	25
whole head boards	72	54	43
whole head boiler	7	6	6
whole head bolt	-11	-17	-7
whole head bottom rail	-15	-9	-9
whole head bowls	8	8	8
whole head box		8
whole head boxes	9		6
whole head boys	10	10	10
whole head bracket			-6
whole head breaker	-30	-34	-18
whole head bricks	6	6	6
whole head broken	-9	-6
whole head brown	-5	-9	-5
whole head bubble		11
whole head bucket	-10	-16	-16
whole head bulb	-17	-8	-8
whole head butler's pantry	5	5	5
whole head button	-8	-6	-6
whole head c			-5
whole head cabinet		14
whole head cabinet doors	12	12	12
whole head cabinets	-14	-17	-12
whole head cable		-14	-9
whole head camera	6
whole head cap		5
whole head card	-11	-6	-7
whole head carpet	-13	-16	-10
whole head carriage bolts	-9	-7	-7
whole head cart	12	12	12
whole head cartridge	7		7
whole head casing	9	21	18
whole head cat		-5
whole head caulk	-6
whole head caulking		9
whole head ceiling	92	69	54
whole head ceiling grid			9
whole head ceiling tiles	5	5	5
whole head ceiling white	5	5	5
whole head ceiling's		13	7
whole head cellulose	6	6	6
whole head cement	-5
whole head cement board	13	13	13
whole head chain			14
whole head chair rail	-7	-7	-7
whole head charcoal		-6
whole head chimney	16	18	8
whole head chip		16	7
whole head circuit	10	15	26
whole head clamps	-15	-11	-16
whole head clean out	-11	-11	-11
whole head clear	19	19	6
whole head clip	-6
whole head clips	-5	-7
whole head closer	-9
whole head closet	28	10	9
whole head closet rod	9	5	5
whole head coat	14	12
whole head coil	8
whole head col	-6	-6	-6
whole head cold	-5	7
whole head color		-6	-6
whole head column	16	8	10
whole head concrete		16
whole head condensate line	10	10	10
whole head copper	-7		-9
whole head cord	-15	-14	-17
whole head corner	-51	-38	-43
whole head corners			7
whole head cornice	11	9	9
whole head corridor	6
whole head counter	13	28	5
whole head countertop	6	6	6
whole head course		5
whole head cove base	-9
whole head cover	29	26	17
whole head crack	21	34	53
whole head cracked	-6	-9	-7
whole head crawl	-11	-6	-6
whole head crooked			7
whole head crown	9	18	9
whole head crown in	7	7	7
whole head crown's		14	12
whole head cupboard	-7	-7	-7
whole head curb	9
whole head cut		-5
whole head cut out	-17	-26	-29
whole head cutout	-5
whole head damper	-5
whole head dead	-6	-7	-5
whole head deck	12		13
whole head delivery	5	11	5
whole head desk	-9	-7	-7
whole head dimmer		8
whole head dining room	31	14	11
whole head dip	8	8	8
whole head discharge	10	10	10
whole head disposal			8
whole head dock	6	6	6
whole head door	11	10	14
whole head door's	-12		-8
whole head doors	21	16	9
whole head downspout		-5	-6
whole head drain	23	9	9
whole head drain line	15	14	14
whole head drain pan	7	7	7
whole head drains	6
whole head drawer front	10
whole head drawing	9	14	6
whole head drill		9
whole head drip		-10
whole head drip edge	8	5	5
whole head driveway	6
whole head drop			6
whole head drops	-20	-23	-18
whole head dry	25	18	11
whole head dryer	8	18	9
whole head drywall	-7		-5
whole head drywall's	11	7	8
whole head duct		-14
whole head due		-8
whole head duplex	-18	-11	-11
whole head east	-8	-8	-8
whole head eave	-6	-6	-6
whole head eaves	6	6	6
whole head edge			8
whole head edges		-12
whole head egress	23	23	23
whole head either		-5
whole head elbow			6
whole head enamel		-7
whole head end	10	6
whole head end panel		-8	-6
whole head ends	-8	-13	-8
whole head entry	17	16	19
whole head epoxy	-12	-8
whole head escutcheon	7
whole head everywhere	-9	-9	-9
whole head exam	9	9	9
whole head except	-9	-23	-12
whole head exhaust	10	10	10
whole head exterior	-7	-5	-5
whole head extra			-9
whole head face			8
whole head face frame	-5	-5	-5
whole head fall	-7	-7	-6
whole head falls	-20	-16	-12
whole head fan		-14	-6
whole head far end	-11	-11	-11
whole head fascia	6	8
whole head faucet	-11	-6	-5
whole head faucet's	-5
whole head fell off	-5	-5	-5
whole head fella	6	14	5
whole head fence	-9	-13	-9
whole head filters	18	13	18
whole head final	9	9	9
whole head finger	-9	-6	-5
whole head finish coat	-5	-5	-5
whole head first	-9	-10	-9
whole head first coat	-29	-29	-25
whole head flange	6		-9
whole head flat	-14	-14	-12
whole head flex	12	6	10
whole head flight	7	7	7
whole head float	-6
whole head flood	6	6	6
whole head floor	51	42	60
whole head floor's	15	11	6
whole head foam	-13	-11	-12
whole head foil	7	7	7
whole head footing	16	9	9
whole head fourth		-7
whole head foyer	6	6	6
whole head frame	15	22	12
whole head free	-7
whole head freezer	-16	-9	-9
whole head fridge	6
whole head front	7	21	7
whole head front door	22	12	30
whole head front door's	9	9	9
whole head front edge	-5	-5	-5
whole head front room			-8
whole head full	6
whole head furnace	-13	-9	-12
whole head gable	14	8	8
whole head gallon	-6	-6	-6
whole head gap	-16	-11	-11
whole head garage	-18	-16	-7
whole head garage door	33	17	17
whole head garden	-9	-9	-9
whole head gasket	-9	-6	-12
whole head gate	-9		-8
whole head gfci	7	6	6
whole head glass	-7	-7	-10
whole head glides	-6	-6	-6
whole head glue	-11	-31	-18
whole head glue's	-11	-11	-11
whole head go	-19	-16	-13
whole head goes	10		5
whole head gone	-10	-9	-6
whole head gouge	5
whole head gray	-12	-10	-10
whole head grease	-10	-9	-9
whole head grid	-7
whole head grill	-5	-5	-5
whole head grille	33	24	24
whole head grout haze	6	7	7
whole head guest room	19	8	8
whole head gutter	38	25	25
whole head gutters	18	13	13
whole head hall	27	25	19
whole head hall bath	11
whole head hallway	-13	-18	-10
whole head hand	15	9	6
whole head handle	7	11	8
whole head handrail	19	26	22
whole head handrail bracket	14	10	10
whole head hangers			-9
whole head happy		6	5
whole head hatch	37	19	36
whole head head	33	32	19
whole head header		9
whole head headroom	-7	-7	-7
whole head hearth		5	5
whole head heat		-6
whole head heat's	-29	-18	-18
whole head heater	16	16	12
whole head height			-7
whole head herringbone	-6	-6	-6
whole head high spot	-9	-5	-5
whole head hinge	-12
whole head hinge pin	-7	-7	-7
whole head hinge screws	9	5	5
whole head hinges		9
whole head hit	9	6	6
whole head hob	-7	-7	-7
whole head hole	-8
whole head hole's	-8	-6	-6
whole head holes	7
whole head hollow			12
whole head hood			-8
whole head hook	6	7	7
whole head hose	10	6	11
whole head hose bib	-16	-29	-15
whole head hot	9	12	11
whole head hot mud	-8	-8	-8
whole head hot side	-21	-12	-12
whole head house	-6	-12
whole head humidity		-7
whole head hump	17	33	16
whole head hung up	-13	-9	-9
whole head inside		-7
whole head inside corner	17	17	17
whole head insulation	-7	-6
whole head island	19	25	20
whole head island's	-6	-6	-6
whole head itself	8	22	13
whole head j-box	-7	-7	-7
whole head jamb	12	21	13
whole head job	-9	-10	-12
whole head joint	22	18	32
whole head joist	-12	-9	-8
whole head joist bay	-5	-5	-5
whole head joists	-8	-16	-7
whole head key	-7	-15
whole head keypad	6	6	6
whole head keys	14	11	9
whole head kit		-6
whole head kitchen		9
whole head kitchen faucet	-18	-9	-9
whole head kitchen island	24	12	13
whole head knee wall	9	9	9
whole head knobs	10	25	12
whole head ladder	19	23	18
whole head ladder's	9	9	9
whole head lads	-6	-11	-6
whole head lags	13	5	5
whole head laminate	-17	-24	-14
whole head lamp	-8		-8
whole head landing	20	18	11
whole head latch	-8	-6	-6
whole head laundry	6	7
whole head laundry room	7	7	7
whole head layers	-12	-8	-7
whole head lazy susan	14	12	12
whole head leak		6
whole head lean	-6
whole head leaning	-5	-9	-5
whole head ledger's	9	5	5
whole head leg	-10	-13	-8
whole head legs	-19	-29	-17
whole head length	-5
whole head let go	-7	-9	-8
whole head level	-11	-12	-13
whole head lid	9	21	24
whole head lid's	10
whole head lift	-15	-6	-11
whole head light	-15	-39	-31
whole head light switch	-5	-5	-5
whole head light's	-15
whole head lights	5	10	6
whole head line	21	12	13
whole head linen closet	17	9	10
whole head lines	-5
whole head lip		12
whole head list	-10	-9	-9
whole head lite	13	12	12
whole head little	-7
whole head living room	-17	-13	-10
whole head load	6	5
whole head lock		-8
whole head log			11
whole head long wall	-6	9
whole head loo	-20	-11	-11
whole head loop	10	10	19
whole head lounge	-12	-7	-7
whole head low spot	11	15	18
whole head lowers	-7	-7	-7
whole head lvl	-9	-9	-9
whole head main	15	8	10
whole head mantel	6
whole head marble	15	7	7
whole head mastic	-6
whole head mat	6
whole head me		-9	-8
whole head meter	6	5
whole head middle		-6
whole head mill	-5	-5	-5
whole head mini split	9	9	9
whole head mirror	17	11	10
whole head mirror's	-9
whole head miter	17	12	12
whole head mixing valve	11	9	9
whole head mold	22	20	15
whole head mortar	-5	-13	-7
whole head moving	11	11	11
whole head mud		6
whole head mudroom	24	12	12
whole head nail plates		8
whole head nails	-10	-10	-12
whole head neutral	17	16	23
whole head new	6	8	10
whole head newel	15	14	10
whole head nice	-6		-8
whole head no power	7
whole head noise	10
whole head noon	6
whole head north	6	6	6
whole head north side	32	14	14
whole head not touching		-6
whole head number	7	15
whole head nursery	9	5	10
whole head nut		7
whole head o	-5
whole head oak	10	24	24
whole head office	-10	-7
whole head open	30	28	19
whole head opened up	-6	-11	-7
whole head opening		-5	-9
whole head osb	6	6	6
whole head outlet	26	24	31
whole head outlets	22	6	9
whole head outside	10	8	12
whole head outta	-8	-8	-8
whole head paint	-12	-25
whole head paint's	-5	-5	-5
whole head pair	-6	-6	-5
whole head pan	-24	-16	-24
whole head pane	-6	-6	-6
whole head panel	-19	-16	-9
whole head panel's	-12	-9	-9
whole head pantry	-8	-9	-8
whole head paper	-6	-6
whole head part	9	16	9
whole head passage	14	14	14
whole head patch	-7
whole head pavers	19	12	12
whole head permit	7	14	7
whole head piece		8
whole head pinhole	5	5	5
whole head pipe	24	32	15
whole head pipe's	-7	-7	-7
whole head pipes	-6		-5
whole head place			-8
whole head plain	10	10	10
whole head plank	12	19	10
whole head planks	6	13	6
whole head plaster	25	14	9
whole head plaster's	7	7	7
whole head plate	-18	-20	-11
whole head plates	18	13	11
whole head plinth		6
whole head plug		5
whole head plywood's	5	5	5
whole head poly	-5	-9	-8
whole head porcelain	-8	-6	-6
whole head porch	-6
whole head post			8
whole head posts	7	-8
whole head powder room	27	20	23
whole head primed	-6	-16	-8
whole head primer	-15	-25	-27
whole head proud of	-5	-10
whole head pull		10
whole head pulls	33	21	16
whole head pump	24	5	6
whole head push	-11	-6	-6
whole head putty	-8	-8	-5
whole head r	-15	-11	-10
whole head rack	-6
whole head racks	-7	-7	-7
whole head rad	-9	-7	-7
whole head radiator		-9	-5
whole head radiators	11	11	11
whole head rag	-8	-8	-8
whole head rail's	18		7
whole head rails	-7	-5	-6
whole head rain	-5	-10	-7
whole head ramp	9	8	8
whole head range	-12	-6	-5
whole head range hood	14	14	14
whole head ray		-7
whole head re	8	15	8
whole head real	-5	-7
whole head reducer	10	13	10
whole head register	-16	-14	-14
whole head return		-6
whole head reveal		8
whole head reveal's	-7	-7	-7
whole head rim joist	12	8	8
whole head ring	-21	-17	-12
whole head rise	6
whole head riser	-7	-7
whole head risers		12	5
whole head rm	32	26	13
whole head ro		9
whole head rock	-24	-17	-11
whole head rocks	-16	-17	-11
whole head roller	-7
whole head rollers	-6		-6
whole head roof	15	14	20
whole head room	24	23	14
whole head round	-13	-15	-9
whole head row		9
whole head rtu			-11
whole head rubber	12	13	13
whole head run	23	7	16
whole head runs	5	12
whole head s			6
whole head salon	-17	-11	-14
whole head sand	-14	-15	-12
whole head sash	11	12	6
whole head say	-9
whole head scratch	-10	-7	-5
whole head scratch coat	-7	-7	-7
whole head screw		5
whole head screw pop	9	9	9
whole head screwdriver	-9	-9	-6
whole head screws	-12	-21	-25
whole head sealant	-6	-8	-5
whole head sealer	-9	-7	-5
whole head seam			15
whole head seat's	-8
whole head second coat	-14	-6
whole head section	-12
whole head shaft	5	5	5
whole head sheathing	10	11	7
whole head shed	9
whole head sheets	11	11	12
whole head shelf	-10
whole head shelf pins	5	5	5
whole head shelves	-12
whole head shim		-6
whole head shoe	5	8	9
whole head shop	-37	-23	-21
whole head shot	-9		-8
whole head shower	22	19	21
whole head side	-73	-69	-62
whole head side's	-6	-6	-6
whole head sides	-20	-18	-15
whole head siding	-7
whole head silicone	8	11	10
whole head sill	-10	5
whole head sill's	-5	-5	-5
whole head sills	7	7	7
whole head sink	-5	-6	-7
whole head sink base	-6
whole head size	-9	-12	-10
whole head skirting	19	16	12
whole head slab	25	12	18
whole head slab's	10	8	8
whole head slate	8
whole head slats	-6
whole head sleeve		-5
whole head slider	14	13	7
whole head slides	-10	-7	-7
whole head slope	-10	-11	-8
whole head slopes		-6
whole head smoke	25	16	20
whole head smoke alarms	10	10	10
whole head smoke detector	-10	-5	-5
whole head smokes	14	14	14
whole head snake	-6	-6	-6
whole head snug	10	7	7
whole head socket	9	9	9
whole head sofa	7	7	7
whole head soffit	8
whole head soft	16	32	14
whole head soft close	20	10	10
whole head sorry	-7	-7	-6
whole head sound	6	6	6
whole head south side	-6	-6	-6
whole head spare	7
whole head spin	-7
whole head spindles	19	28	19
whole head spins	15	11	11
whole head spits	7	9	9
whole head splash	5	5
whole head split		8
whole head sponge	-5	-5	-5
whole head spot	-12		6
whole head spring	-6
whole head squeaks	7	7	7
whole head stack	-6	-6	-6
whole head stain	-12		-6
whole head stair	-14	-11	-13
whole head stair treads	9	9	9
whole head stairs	-29	-28	-25
whole head staple	7
whole head steel	-12	-7	-8
whole head stem	-16	-11	-11
whole head step	-8	-8	-8
whole head steps	15	11	5
whole head stile	6	10	6
whole head stone	-5	-10
whole head stone's	-6	-6	-6
whole head stones	6	6	6
whole head stool	5	5	5
whole head stop		-8
whole head store	10
whole head straight	-7	-5
whole head street		10
whole head strike		15	10
whole head string		8	8
whole head strip	-6
whole head structural screws	-7
whole head stub	-9	-6	-6
whole head stucco	6
whole head studs		-10	-7
whole head subfloor	18	15	14
whole head sunroom	7	7	7
whole head swap	10	10	10
whole head sweep	-12	-14	-11
whole head switch	17	9	15
whole head t	18	9	9
whole head tables	11	11	11
whole head tailpiece	-5	-5	-5
whole head take off	-11	-5	-5
whole head tank	-6	-5
whole head tap's	5	5	5
whole head tape	-21	-24
whole head tea	-6	-6	-6
whole head thermostat	14	18	12
whole head thinset		-7
whole head third coat	-11	-11	-11
whole head threshold	15	11	10
whole head tile	19	11	15
whole head tile's	8	14	7
whole head tiles	7	7	6
whole head tip	6
whole head toast	5
whole head toilet		9	6
whole head toilet flange	-7	-8	-8
whole head too high	-6	-8
whole head top			-6
whole head top edge	-5
whole head towel bar's	9	9	9
whole head track	-24	-22	-14
whole head trap	18	17	22
whole head travelers	-12	-7	-7
whole head tray		7
whole head tread			6
whole head treads		6
whole head trench	12	22	12
whole head trim	44	38	27
whole head trim's	-16	-8	-8
whole head truck	-13	-8	-9
whole head tub		-11
whole head tub surround	10	10	10
whole head tube	10		5
whole head twice	-7	-6
whole head two by four	-7	-7	-7
whole head two by ten	-5	-5	-5
whole head two by three	-9	-9	-9
whole head unit	10
whole head units	15	6	6
whole head uppers		-11	-8
whole head upstairs hall	5	7	7
whole head utility sink	5	5	5
whole head valve	-15	-27	-19
whole head valve's	7	7	7
whole head valves	-10	-10	-10
whole head vanity	-13	-9	-15
whole head vanity light	9	5	5
whole head vent	16	11	9
whole head vent's	-10	-6	-6
whole head vinyl	-9	-9
whole head wainscot	-6	-6	-6
whole head wall	7		-36
whole head wallpaper	10
whole head walls	-35	-41	-38
whole head want	-8	-10	-6
whole head wants		-11	-6
whole head washer	-19	-11	-25
whole head washer box	5		5
whole head wasp nest	33	28	28
whole head waste	14	6	9
whole head water	-47	-38	-56
whole head water line	9	9	18
whole head water's	-20	-15	-15
whole head wax ring	-20	-5	-5
whole head weatherstrip	-7
whole head wee	-7	-7	-7
whole head weeping		-6
whole head went	-5	-6
whole head wet			7
whole head white	-16	-19	-12
whole head whoever	-16	-15	-10
whole head window	-17	-28	-25
whole head wire	23	24	21
whole head wire's	-6	-6	-6
whole head wood	-9	-16	-8
whole head zone	10
whole heading	27	29	17
whole heading +1	-23	-31	-34
whole heading -1	19	12
whole heading -2	-32		-17
whole heading -3	18	7	21
whole heading -4	19	23	16
whole heading here-after	20	8	23
whole is-flaw	-7
whole kind +1 area	-11	-7	-10
whole kind +1 defect	-7		-6
whole kind +1 fixture	-13	-19	-13
whole kind +1 material	-28		-13
whole kind +1 part	10
whole kind +1 size	8
whole kind +1 surface	-8	8
whole kind +1 tool	-12	-18	-11
whole kind +1 verbish	17	10	7
whole kind -1 area		-18	-9
whole kind -1 defect		34	15
whole kind -1 finish	-10		-14
whole kind -1 fixture	29	39	30
whole kind -1 material		-10
whole kind -1 part	6		19
whole kind -1 size	-28	-10
whole kind -1 tells		-6	10
whole kind -1 tool	30
whole kind -1 verbish	17	38	8
whole kind -1 word	-21	-15	-16
whole kind -1 work	-5
whole kind -2 area		-8	-15
whole kind -2 defect			24
whole kind -2 finish	24	11	21
whole kind -2 fixture	23	14	6
whole kind -2 material	-25	-11	-16
whole kind -2 part	-8
whole kind -2 size	7		11
whole kind -2 surface	22	-9	10
whole kind -2 tells	-21	-9	-15
whole kind -2 tool	-17	-5
whole kind -2 verbish	-12		-10
whole kind -2 word	13	38	13
whole kind -2 work		17
whole kind -3 area	23	16	-9
whole kind -3 defect	-27	-33	-32
whole kind -3 finish		16	6
whole kind -3 fixture	21
whole kind -3 material			9
whole kind -3 part	-23	-26
whole kind -3 size	-13	-29	-22
whole kind -3 surface	9	15	26
whole kind -3 tells			7
whole kind -3 tool	9	9	7
whole kind -3 verbish		11
whole kind -3 word	-6		-7
whole kind -3 work	-9	-5	-7
whole kind -4 area	-8	10
whole kind -4 defect		-6
whole kind -4 finish	-14	-21	-15
whole kind -4 fixture	-50	-30	-22
whole kind -4 material	8		13
whole kind -4 part	28	5	-16
whole kind -4 size	-11	-12	-8
whole kind -4 surface	-8		-25
whole kind -4 tells	-9	-7	-10
whole kind -4 verbish	15		10
whole kind -4 word	19	6	13
whole kind -4 work	-7	-9	-6
whole kind area	7		-19
whole kind defect	-34	-14
whole kind finish	-6	-6	-20
whole kind fixture	35	27	24
whole kind here-after area	15		17
whole kind here-after defect	-32	-22	-13
whole kind here-after finish	-16	-14	-21
whole kind here-after fixture	7	10	8
whole kind here-after material	30	31
whole kind here-after part	32	59	36
whole kind here-after size		12	8
whole kind here-after surface	9		14
whole kind here-after tells		-6
whole kind here-after tool		11	-14
whole kind here-after verbish	-19	-37	-14
whole kind here-after word	-17	-49	-15
whole kind here-after work	7	10	10
whole kind here-before area	-7
whole kind here-before defect	16		8
whole kind here-before finish	8	5
whole kind here-before fixture			6
whole kind here-before material	29	16	23
whole kind here-before part		11	14
whole kind here-before size	26	14	13
whole kind here-before surface		20	-6
whole kind here-before tells	-8	-12	-6
whole kind here-before tool		14
whole kind here-before verbish	-33	-30	-23
whole kind here-before word	-14	-26	-11
whole kind material	16	21	18
whole kind part	30	35	42
whole kind size	-17	-19	-6
whole kind surface	18	17	12
whole kind tells	-34	-38	-14
whole kind tool	12	11	-13
whole kind verbish	-12	-8	-24
whole kind word	-27	-35	-22
whole kind work	-6	17	7
whole lead a -2	-10	-5	-5
whole lead a -3	-31	-16	-16
whole lead a here-after	33	16	16
whole lead area here-before	10
whole lead finish here-before	-6
whole lead fixture -2	-13	-6	-6
whole lead fixture -3	13	7	7
whole lead fixture -4	-46	-23	-23
whole lead fixture here-before	-13	-7	-7
whole lead in -4	23	11	11
whole lead in here-before	-12	-6	-6
whole lead material -1	-47	-24	-24
whole lead material -2	-29	-14	-14
whole lead material -4	-48	-24	-24
whole lead material here-before	35	18	18
whole lead number -1	-21	-11	-11
whole lead number -3	24	12	12
whole lead number -4	24	12	12
whole lead number here-after	-9
whole lead number here-before	-8
whole lead on -1	-6
whole lead on -2	5
whole lead on -4	8
whole lead part -1	-27	-13	-13
whole lead part -2	-30	-15	-15
whole lead part -3	-38	-19	-19
whole lead part -4	-25	-13	-13
whole lead part here-before	-9
whole lead quantity -1	51	25	25
whole lead quantity -2	-15	-8	-8
whole lead quantity -3	8
whole lead quantity -4	24	12	12
whole lead quantity here-after	-21	-10	-10
whole lead quantity here-before	15	7	7
whole lead role -1	5
whole lead role here-after	8
whole lead size -1	-11	-5	-5
whole lead size -4	-6
whole lead size here-before	5
whole lead surface -1	-10
whole lead surface -2	7
whole lead surface -4	-15	-8	-8
whole lead surface here-before	-8
whole lead tells -2	-5
whole lead tells -3	8
whole lead tells here-before	5
whole lead that -2	-16	-8	-8
whole lead that -4	18	9	9
whole lead that here-before	7
whole lead the -2	-10
whole lead the -3	6
whole lead the -4	-9
whole lead the here-after	33	17	17
whole lead to -2	9
whole lead tool -1	-9
whole lead tool -2	-6
whole lead tool -3	-5
whole lead tool -4	11	6	6
whole lead verbish -2	-19	-9	-9
whole lead verbish -4	-7
whole lead verbish here-after	-30	-15	-15
whole lead with -2	17	9	9
whole lead with -3	-9
whole lead with -4	-7
whole lead word -1	32	16	16
whole lead word -2	8
whole lead word -3	41	20	20
whole lemma be object	-32	-16	-16
whole lemma be subject	-17	-8	-8
whole lemma drip subject	5
whole lemma find object	9
whole lemma get object	-17	-9	-9
whole lemma get subject	-11	-5	-5
whole lemma go subject-late	-6
whole lemma hang subject	-9
whole lemma have object	-12	-6	-6
whole lemma have subject	15	8	8
whole lemma keep subject	-13	-6	-6
whole lemma leave object	18	9	9
whole lemma leave subject	14	7	7
whole lemma read subject	7
whole lemma run object	-12	-6	-6
whole lemma run subject	7
whole lemma trip subject	12	6	6
whole number many many	28	54	28
whole number many one	-31	-60	-33
whole number none many	7	17
whole number none one		-9
whole number one many			-13
whole number one one	8	9	15
whole opens PREP	-38	-31	-31
whole opens Vmoveb	9	13	6
whole opens Vmovei		-6
whole opens Vmovep	-7	-9	-6
whole opens Vmovepp	-12		-7
whole opens Vmoves	-8	-6	-6
whole opens Votherb	-9
whole opens Votheri		-5
whole opens Votherpp	5	7	7
whole opens Vothers	-6	-6	-6
whole opens Vworkb	-64	-45	-33
whole opens Vworkbp	-9	-11	-9
whole opens Vworki	-12	-11	-5
whole opens Vworkpp	-18	-9	-9
whole opens Vworks	8		11
whole opens tarea	41	24	41
whole opens tarea's	5
whole opens tdefect	-62	-66	-41
whole opens tdefect's	6
whole opens tdefectVotherb	-10	18	19
whole opens tdefectVotheri	-18	-28	-17
whole opens tdefectVotherp	-12	-11	-9
whole opens tdefectVotherpp	-11	-17	-15
whole opens tdefectVothers			9
whole opens tdefectVworkbpp	-7		-6
whole opens tdefectVworki	-5	-5	-9
whole opens tdefectVworkpp	-26	-26	-28
whole opens tdefectVworks		10
whole opens tfinish	-32	-32	-36
whole opens tfinishVworkb		14	5
whole opens tfixture	50	55	56
whole opens tfixture's	43	32	23
whole opens tfixtureVworkb	-25	-14	-21
whole opens tmaterial	55	47	22
whole opens tmaterial's	46	44	26
whole opens tmaterialVotherb	14	23	19
whole opens tmaterialVworkb			24
whole opens tmaterialVworki	17	34	11
whole opens tmaterialVworks	-22	-28	-41
whole opens tpart	64	66	76
whole opens tpart's	18	49	26
whole opens tpartVothers		-8
whole opens tpartVworkb	9	-24	12
whole opens tpartVworki		9
whole opens tpartVworks		16
whole opens trole	-28	-37	-30
whole opens trole's	-13	-7	-12
whole opens tsurface	17	15	16
whole opens tsurface's	-18	-6	-6
whole opens tsurfaceVotherb	-15	-6	-8
whole opens tsurfaceVworkb	-7		-10
whole opens tsurfaceVworki	9	11	15
whole opens tsurfaceVworks	-14
whole opens ttool	-8	-37	-28
whole opens ttool's	17	11	10
whole opens ttoolVworkb	-13	-10	-19
whole opens ttoolVworks	-12	-7	-14
whole opens twork		16	8
whole opens w		-21	-42
whole opens w's	-28	-19
whole opens wed	11	-7
whole opens wing		-27	-21
whole opens wly	-6	-6	-6
whole opens-with +1	19	10	10
whole opens-with -1	21	10	10
whole opens-with -2	32	16	16
whole opens-with -4	58	29	29
whole opens-with here-after	11	6	6
whole part +1 bare	16	12	14
whole part +1 object	-31		-18
whole part +1 opens	-42	-31	-23
whole part +1 subject	12	-10	-15
whole part +1 subject-late	-6	-6	-7
whole part -1 bare	-8	-9	-11
whole part -1 object	48	10	32
whole part -1 opens		16	-6
whole part -1 subject		33	28
whole part -1 subject-late	-21
whole part -2 bare	32	34
whole part -2 object	-15	-9
whole part -2 opens	-11		8
whole part -2 subject			13
whole part -2 subject-late		15	-8
whole part -3 bare	-15	-14	-7
whole part -3 object	-7	-16	-31
whole part -3 opens	8	-9	18
whole part -3 subject	-10		-17
whole part -3 subject-late	30	28	32
whole part -4 bare	-17	-41	-33
whole part -4 object	-21	-16
whole part -4 opens	39	40	26
whole part -4 subject	-23	-45	-43
whole part -4 subject-late	-9		-12
whole part bare	-12	-16	-42
whole part bare area	-9	-22	-23
whole part bare defect	-46	-41	-42
whole part bare finish	12	19
whole part bare fixture	-25	-29	-20
whole part bare material		-8	-8
whole part bare part	19	-6
whole part bare size		11	15
whole part bare surface			-8
whole part bare tells	9	13	13
whole part bare tool	10
whole part bare word	9	19	14
whole part bare work	9	17	12
whole part here-after bare	-19	-10
whole part here-after object		24	-16
whole part here-after opens	16	-8	9
whole part here-after subject	19	17	33
whole part here-after subject-late		-19
whole part here-before bare		9	-5
whole part here-before object	-14
whole part here-before opens	9	6	11
whole part here-before subject	42	28	38
whole part here-before subject-late	-25	-27	-18
whole part object	-23	-19	-28
whole part object area	19	-10	16
whole part object defect		27	25
whole part object finish	-28	-25	-28
whole part object fixture	12		7
whole part object material	21	18
whole part object part	6	15	27
whole part object size	6	10
whole part object surface	22	-6	6
whole part object tells	-30	-16	-13
whole part object tool	-17	-12	-19
whole part object verbish	-6	-17	-19
whole part object word	-46	-17	-38
whole part object work	-5
whole part opens	21	14	40
whole part opens area		7	-11
whole part opens defect		7	18
whole part opens finish	14	11	11
whole part opens fixture	35	42	33
whole part opens material	16		38
whole part opens part		-9	-18
whole part opens size	-10	-15	-9
whole part opens surface		29	33
whole part opens tells	-6	-16	-6
whole part opens tool	13
whole part opens verbish	-29		-24
whole part opens word		-35	-18
whole part opens work	-8	-5	-6
whole part subject	29	32	37
whole part subject area	-10	8	-5
whole part subject defect			-6
whole part subject fixture		10	12
whole part subject material	-7	-12
whole part subject size		-16	-9
whole part subject surface	6	22	-5
whole part subject tells	-5	-16	-6
whole part subject tool	15	24	16
whole part subject verbish	22	8	19
whole part subject word	12		27
whole part subject work		16	10
whole part subject-late	-21		-13
whole part subject-late area	11	12
whole part subject-late defect		-16
whole part subject-late finish	-8	-7	-5
whole part subject-late fixture	6		-12
whole part subject-late material	-17	22	-6
whole part subject-late part	22	45	49
whole part subject-late size	-8	-10	-7
whole part subject-late surface	-6	-28	-18
whole part subject-late tool	-9
whole part subject-late word	-6	-9	-10
whole person	-27	-39	-40
whole points both -2			-10
whole points both -3	7		16
whole points both here-after			8
whole points both object	6		13
whole points both opens	9	12	14
whole points both subject	-10	-10	-17
whole points both subject-late			7
whole points em -1		7
whole points em -2	-15	-22	-24
whole points em -3		8
whole points em -4		-12
whole points em bare	-8	-12	-11
whole points em here-before			7
whole points em object			-9
whole points it +1			-6
whole points it -1		-12
whole points it -2			-10
whole points it -3	8	8	17
whole points it -4		6
whole points it bare		11	-10
whole points it here-after			-7
whole points it here-before	-23	-42	-27
whole points it object	-17	-35	-17
whole points it opens		7	-9
whole points it subject	16	13	38
whole points it subject-late	-21	-33	-32
whole points none -1	7		22
whole points none -2	-6	-6	-14
whole points none -3	-15	-19	-30
whole points none -4	-9		-25
whole points none bare			-9
whole points none here-after	15	19	26
whole points none here-before	14	16	26
whole points none object	-11		-33
whole points none opens	12		38
whole points none subject	7	12	8
whole points one +1	-9	-13	-15
whole points one -1	12	28	10
whole points one -2		-13	7
whole points one -3		-8
whole points one -4		9
whole points one bare	-16	-25	-22
whole points one here-after	-8	-16	-9
whole points one object	8	11	13
whole points one opens	-6		-14
whole points one subject-late	9	9	18
whole points that +1			-6
whole points that -1	10	19	10
whole points that -2	30	49	45
whole points that -3			-9
whole points that -4	-19	-33	-25
whole points that bare	-10	-13	-17
whole points that here-after	-6	-13
whole points that here-before	19	36	22
whole points that object	7	12	10
whole points that opens	9	12	16
whole points that subject	11	20	12
whole points that subject-late	12	21	14
whole points them -1	15	30	15
whole points them -2	-5	-8	-8
whole points them -4	-6	-10	-7
whole points them bare			8
whole points them here-before			-7
whole points them object	12	21	14
whole points them subject	-9		-22
whole points they -2	12	24	14
whole points they -4	-19	-37	-20
whole points they here-after		8
whole points they here-before		6
whole points they object		-10
whole points they subject	7	12	8
whole points this -1	-7	-9	-7
whole points this -2	14	23	14
whole points this object		10
whole points those -2	10	10	20
whole points those -3	-5	-9	-5
whole points those bare	5	11	5
whole points those here-after		-7
whole points those opens	-7	-13	-7
whole points those subject	-10	-26	-10
whole points those subject-late	6	14	6
whole prep about	9	20	23
whole prep above	-17	-13	-8
whole prep after	-8	-8	-6
whole prep against	-8	-8	-8
whole prep along	-24	-35	-24
whole prep at	-40	-41	-54
whole prep before	6		5
whole prep behind		-6
whole prep between	-7	-8	-9
whole prep by	-89	-90	-97
whole prep for		9	-12
whole prep from	-65	-61	-55
whole prep here-after by	-10	-8	-8
whole prep here-after for		-8
whole prep here-after from	-13	-7	-8
whole prep here-after in	-6	-20	-10
whole prep here-after of	25	21	10
whole prep here-after off	-7	-8	-11
whole prep here-after on	11		6
whole prep here-after to			-7
whole prep here-after with	-13		-6
whole prep here-before behind	6
whole prep here-before in	-8		-6
whole prep here-before of	10	9	11
whole prep here-before on	-23	-11	-12
whole prep here-before over	-6
whole prep in	-31	-50	-20
whole prep inside	7	7	6
whole prep into	-10	-6	-13
whole prep near	-8	-17	-11
whole prep next	9	15	9
whole prep of	-17		-9
whole prep off	-14	-38	-18
whole prep on	-13	-9	-19
whole prep onto	-5	-5	-5
whole prep other about	9	17	22
whole prep other above	-15	-12	-7
whole prep other after	-8	-8	-6
whole prep other against	-6	-6	-6
whole prep other along	-26	-34	-24
whole prep other at	-38	-40	-53
whole prep other before	6		6
whole prep other behind		-5
whole prep other between	-9	-8	-10
whole prep other by	-80	-79	-90
whole prep other for		16	-10
whole prep other from	-50	-56	-47
whole prep other in	-22	-33	-9
whole prep other inside		6
whole prep other into	-10	-6	-13
whole prep other near	-14	-20	-14
whole prep other next	9	15	9
whole prep other of	-45	-26	-25
whole prep other off	-8	-27	-7
whole prep other on	-10	-8	-19
whole prep other onto	-5	-5	-5
whole prep other out		-15
whole prep other over	-45	-44	-36
whole prep other past	-7	-7
whole prep other through	-11		15
whole prep other to	-41	-48	-39
whole prep other toward	-14	-14	-12
whole prep other under		-25	-13
whole prep other up	-12	-10	-8
whole prep other with	-67	-65	-51
whole prep out		-16
whole prep over	-46	-47	-38
whole prep past	-7	-7
whole prep through		7	20
whole prep to	-42	-45	-46
whole prep toward	-14	-14	-12
whole prep under	11	-22	-10
whole prep up	-11	-11	-8
whole prep with	-82	-65	-58
whole rank after 0	-24	-21	-12
whole rank after 1	26		-6
whole rank after 2	-12
whole rank after 4	-11	-9	-8
whole rank before 0	35	-6	7
whole rank before 1	17	32
whole rank before 2	-7	14	15
whole rank before 3	-8		33
whole rank before 4	-12	-6	-31
whole says copula		-7	-9
whole says imperative	18	14	24
whole says modal	-10	-38	-11
whole says none	9
whole says owed	-19	14	20
whole says past	10	7	-7
whole says present	-16	24	-9
whole sentences -1	-142	-119	-116
whole sentences -1 bare	-44	-32	-31
whole sentences -1 object	-43	-29	-31
whole sentences -1 opens	-52	-55	-61
whole sentences -1 subject	-10		9
whole sentences -1 subject-late	-23	-32	-30
whole sentences -2	-105	-113	-99
whole sentences -2 bare	-29	-30	-26
whole sentences -2 object	-36	-39	-23
whole sentences -2 opens	-62	-63	-36
whole sentences -2 subject	-9	-23	-40
whole sentences -2 subject-late	16	26	13
whole sentences 1	-33	-32	-16
whole sentences 1 object	-11	-11	-8
whole sentences 1 opens	-16	-19	-13
whole size 1	-14	-29	-20
whole size 2		16	15
whole size 3	18	36	11
whole sort PREP	-29	-14	-26
whole sort Vmeasureb	-5	-10
whole sort Vmeasurebpp	5	5	5
whole sort Vmoveb	9	16
whole sort Vmovei	-12	-14	-9
whole sort Vmovep	-19	-20	-13
whole sort Vmovepp	-14	-14	-12
whole sort Vmoves		-7
whole sort Vneeds		-15	-10
whole sort Votherb	-23	-8	-9
whole sort Votheri	-9	-15	-8
whole sort Votherpp	6	15	7
whole sort Vothers	-8	-12	-7
whole sort Vreturnb	-7	-8	-5
whole sort Vsayb	-14	-6	-7
whole sort Vsays		-6
whole sort Vseeb	-14	-10	-9
whole sort Vworkb	20		-9
whole sort Vworkbp	21	7	15
whole sort Vworkbpp		6
whole sort Vworkpp	-44	-33	-31
whole sort Vworks	20	31	25
whole sort w	-20	-31	-37
whole sort w's	-26		-8
whole sort wed	19	-7
whole sort wing	-10	-19	-26
whole sort wly	-7	-6	-6
whole stands after	-56	-67	-63
whole stands after 0 of 0	-11	-16	-12
whole stands after 0 of 1	-22	-20	-24
whole stands after 0 of 2	-10	-11	-12
whole stands after 0 of 3	-12	-11	-8
whole stands after 1 of 1	-9	-12	-12
whole stands after 1 of 2	-12	-9	-10
whole stands after 1 of 3	14	6	6
whole stands after 2 of 1			9
whole stands after has 0	-12	-18	-13
whole stands after has 1	-26	-27	-27
whole stands after has 2	-22	-19	-22
whole stands after has 3		-6
whole stands after points it	-6		-14
whole stands after points nothing	-30	-33	-26
whole stands after points one		-7	-6
whole stands after points that	-6	-10	-9
whole stands before			-5
whole stands before 0 of 1	-23	-11	-17
whole stands before 0 of 2	-15	-39	-39
whole stands before 0 of 3	-26	-55	-23
whole stands before 1 of 1	22	8
whole stands before 1 of 2	17	27	6
whole stands before 1 of 3	21	24	11
whole stands before 2 of 0	-16	-29	-19
whole stands before 2 of 1	42	27	24
whole stands before 2 of 2	-11		24
whole stands before 2 of 3		29	-5
whole stands before 3 of 0	-12	-10	-9
whole stands before 3 of 1	-18
whole stands before 3 of 2	26	28	35
whole stands before 3 of 3		-7	19
whole stands before 4 of 0	-14	-6	-31
whole stands before 4 of 1	-6
whole stands before 4 of 2	-28	-14	-14
whole stands before 4 of 3	32	16	16
whole stands before has 0	-35	-39	-44
whole stands before has 1	18	25	9
whole stands before has 2		11	17
whole stands before has 3	9		5
whole stands before points em	-20	-26	-33
whole stands before points it's	18	6	14
whole stands before points nothing	-20	-17	-28
whole stands before points one			6
whole stands before points ones		11
whole stands before points that	13	20	20
whole stands before points that's	9	13	13
whole stands before points they	-7	-13	-9
whole stands before points they're		-8
whole stands before points this		11
whole stands before points those			11
whole stands here	34	59	54
whole stands here 0 of 2	21	44	46
whole stands here 0 of 3	91	66	69
whole stands here 1 of 2		-6
whole stands here 1 of 3	-39	-20	-32
whole stands here 2 of 3	-54	-31	-34
whole stands here 3 of 3	-13	-5	-5
whole stands here 4 of 3	-11	-9	-7
whole stands here has 2	23	40	44
whole stands here has 3	13	23	12
whole stands here points both	9	11	17
whole stands here points em		6	5
whole stands here points it	-22	-40	-26
whole stands here points it's		7	7
whole stands here points nothing	27	32	50
whole stands here points that	11	19	11
whole stands here points that's	7	15
whole stands here points them		8
whole stands here points they	12	22	12
whole stands here points they're		9
whole stands here points this		8
whole stands here points those	-11	-20	-11
whole stands-off-after	18	9	9
whole subject none -1	14	7	7
whole subject none -2	6
whole subject none -3	22	11	11
whole subject none here-after	28	14	14
whole subject own +1	-33	-16	-16
whole subject own -1	-64	-32	-32
whole subject own -2	-57	-29	-29
whole subject own -3	-52	-26	-26
whole subject own -4	-46	-23	-23
whole subject own here-after	-13	-7	-7
whole subject own here-before	22	11	11
whole subject person +1	10
whole subject person -1	-5
whole subject person -2	-21	-10	-10
whole subject person -3	-15	-7	-7
whole subject person -4	-10	-5	-5
whole subject person here-before	7
whole subject pointer +1	-8
whole subject pointer -1	61	31	31
whole subject pointer -2	42	21	21
whole subject pointer -3	46	23	23
whole subject pointer -4	63	31	31
whole subject pointer here-after	-6
whole subject pointer here-before	-25	-12	-12
whole subject tells -1	-7
whole subject tells -2	5
whole subject tells -3	6
whole subject tells here-after	5
whole told as bought before		5
whole told as done after	-5	-11	-5
whole told as done before	9	18	9
whole told as done here	18	35	18
whole told as fixed after			7
whole told as fixed before	8	9	15
whole told as fixed here	-9	-12	-16
whole told as have before	-15	-19	-17
whole told as have here	-7	-6
whole told as need after		-7
whole told as need before	-39	-63	-43
whole told as need here	12
whole told as open after	-13	-13	-25
whole told as open before	18	43	8
whole told as open here	13	7	34
whole told as ordered before	21	24	14
whole told as used before		-8	-31
whole told as used here	-8	-5	-9
whole unit none area	22	11	11
whole unit none defect	-44	-22	-22
whole unit none fixture	28	14	14
whole unit none material	-5
whole unit none part	11	6	6
whole unit none size	-26	-13	-13
whole unit none surface	18	9	9
whole unit none tells	-25	-12	-12
whole unit none tool	21	10	10
whole unit none verbish	-8
whole unit none word	-8
whole unit none work	-19	-10	-10
whole use buy	30	34	18
whole use have	37	39	47
whole use measure	6		-13
whole use move	-40		-8
whole use need	-17		29
whole use other	-9		18
whole use say	-27	-32	-26
whole use see		-18	-8
whole use use		-6	-9
whole use work	5	-11	-19
whole where +1	-50	-39	-50
whole where -1	23	37	34
whole where -2		25	15
whole where -3			-8
whole where -4	-24	-47	-47
whole where here-after	17	6	17
whole where here-before	23	23	27
whole word account	-6	-6	-6
whole word air			-6
whole word anyone		-9
whole word anything	11
whole word apt	-10	-10	-12
whole word asbestos	9	9	9
whole word aside		-6
whole word b	17	14	23
whole word baby	24	10	10
whole word back	24	7	8
whole word bad	-14	-15	-10
whole word bag	-6
whole word balance	5	5	5
whole word bare	8	16	9
whole word bead			-6
whole word bearing	-7
whole word bed	18	8	7
whole word bedroom	11	11	15
whole word bench	13	14	12
whole word big	8
whole word bled		-7
whole word board	19	12	20
whole word boards	72	54	43
whole word bottom	15	33	16
whole word bowls	6	6	6
whole word box	-6
whole word boxes	9		6
whole word boys	6	6	6
whole word br	-6	-6
whole word bump	5
whole word button	-8	-10	-6
whole word bypass	6	7	7
whole word c	-11		-10
whole word cab	6
whole word cam	7
whole word card	-13	-8	-7
whole word cat	-8	-8	-6
whole word church	-16	-8	-8
whole word click	-6	-6	-6
whole word coffee	-5	8
whole word col	-6	-6	-6
whole word cold		13
whole word color	-7	-12	-11
whole word copier	10	10	10
whole word council	5	5	5
whole word counter	26	50	26
whole word cover	32	32	20
whole word dark		8	7
whole word defect	-68	-33	-14
whole word dentist's	-5	-5	-6
whole word different		-5
whole word dining	11	19	10
whole word discharge	17	17	17
whole word drum		-7
whole word dry	25	18	11
whole word due		-8
whole word dust	-7
whole word egress	23	23	23
whole word either		-6
whole word electrical	-5
whole word end	6	5
whole word ends	-8	-13	-8
whole word everywhere	-10	-9	-9
whole word exam	19	9	9
whole word except	-16	-26	-15
whole word exhaust	40	24	24
whole word exit	5
whole word extra			-8
whole word eye	-8	-5	-5
whole word face	14		11
whole word far		8
whole word fella		14
whole word fifth	7
whole word final	9	19	9
whole word finger	-9	-5
whole word finish	-12		-30
whole word first	8	10	6
whole word flight	7	7	7
whole word float	-6
whole word foil	8	8	8
whole word fourth		-7
whole word free	-7
whole word front	28	38	14
whole word full	-8	-12	-11
whole word gallon	-6	-6	-6
whole word go	-17	-13	-11
whole word god	9		8
whole word goes		-6
whole word going	-9	-8	-6
whole word golf	6	6	6
whole word gone	-14	-13	-9
whole word guest	-6	-5	-5
whole word half	-12	-14	-10
whole word hand	17	8
whole word happy		6
whole word hard	-5
whole word head	32	33	19
whole word heavy	-7	-12	-7
whole word height	-6		-8
whole word hit	10	8	8
whole word ho		6
whole word home	7
whole word horse	-5
whole word hot			14
whole word house	-20	-25	-13
whole word hvac	-6	-6
whole word inside	-8	-10
whole word instead	-7
whole word itself	8	22	13
whole word job		-8	-10
whole word kids	-8	-5	-6
whole word kit	-5	-7
whole word lads	-6	-11	-6
whole word last	-11	-20	-17
whole word layers	-12	-8	-7
whole word leakage	-5
whole word lean	-6
whole word left	-14	-14	-12
whole word length	-5
whole word level	-11	-12	-13
whole word lid		8	14
whole word lid's	10
whole word list	-11	-10	-10
whole word lite	13	12	12
whole word little	7	7
whole word log			11
whole word look	-8	-7
whole word loop	7	7	13
whole word loops	6	6	6
whole word lower	8
whole word lunch	21	10	13
whole word machine	11	6	5
whole word make	7
whole word mat	6
whole word me	-10	-12	-16
whole word metal	6
whole word middle	12		6
whole word mill	-7	-9	-6
whole word mouse	-7
whole word moving	11	11	11
whole word mr			7
whole word n	-10	-6	-7
whole word near	-5
whole word new	-28	-33	-33
whole word nice		6
whole word noon	15	22	12
whole word number	-6		10
whole word nurse	8	8	8
whole word o	-5
whole word off	-13	-16	-13
whole word oil		10
whole word old		6	17
whole word open	30	29	19
whole word other	8
whole word out	-7		-8
whole word outta	-8	-8	-8
whole word over	5	10	7
whole word pair	-6	-6	-5
whole word paper	-7	-7
whole word part	12	21	11
whole word passage	13	13	13
whole word patch	-8
whole word pea	7	7	7
whole word permit	6	12	6
whole word piece		8
whole word place	-8	-6	-10
whole word plain	8	15	8
whole word popcorn	6	6	6
whole word pot	-7	-7	-7
whole word powder	40	20	18
whole word proper	-7	-5	-5
whole word push	-13	-8	-8
whole word put	-6	-5
whole word quick		-6
whole word r	-12	-11	-9
whole word rain	-5	-10	-7
whole word ray		-8
whole word re	14	22	12
whole word real	-7	-9	-6
whole word rear			-6
whole word relief	7	7	7
whole word replacement		-5
whole word return	-7	-8	-5
whole word right	-6
whole word ring	-21	-16	-12
whole word rise	6
whole word rm	7		-13
whole word room	12	14
whole word round	-22	-23	-14
whole word row		7
whole word rubber	11	26	11
whole word run	21	7	15
whole word s	-5	-7
whole word say	-9
whole word schluter	9	9	9
whole word school	-12	-6	-6
whole word second	-10	-12	-6
whole word sheet	10	9
whole word sheets	17	11	12
whole word sir	9
whole word size	-9	-12	-10
whole word slow	6		5
whole word sofa	7	7	7
whole word something	-7
whole word sorry	-8	-8	-6
whole word sound	6	6	6
whole word special	-6	-6	-6
whole word spin	-7
whole word spins	13	10	10
whole word spits	7	9	9
whole word spot	-16	-11
whole word st			-7
whole word steam	-8
whole word steel	-8		-6
whole word stop		-7
whole word store	10
whole word straight	-14	-16	-11
whole word street	7	16	16
whole word strip	-7
whole word suite	8		5
whole word susan	6	6	6
whole word swap	10	10	10
whole word t	18	8	8
whole word table	20	11	15
whole word tables	11	11	11
whole word tea	-6	-6	-6
whole word temporary		-6
whole word test		-10
whole word third	-6
whole word tip	6
whole word top			-5
whole word towel	6	6	6
whole word tube	10
whole word twice	-7	-6
whole word unit	-6	-9	-11
whole word units	15	6	6
whole word upper			5
whole word wants		-14	-9
whole word waste	14	6	9
whole word went	-5	-7
whole word whoever	-16	-15	-10
whole word worst	-6	-11	-6
whole word zone			8
word a	10	15	17
word about		-8
word after		8
word again		9
word air	-21	-16	-15
word alarm	-5
word all	-9	-13	-13
word alone	-17	-14	-9
word an		10
word and	13	24	15
word another	9	18	9
word answer	6	6	6
word any		5
word anybody	-12	-25	-15
word anyhow	-6	-8
word anyone	-10	-18	-10
word anything	-28	-50	-28
word anywhere	-6
word area	-10	-13	-16
word arm	11	9	12
word aside	-13	-16	-10
word at	-7	-5	-15
word baby	10
word back	17		9
word backset	6	6	6
word backwash	7	7	7
word bad	-6	-6	-7
word bag	-6
word bare	-18	-15	-6
word batch	-12	-6	-6
word bead			-12
word bearing	7	6
word bearings	10	8	8
word bed		-6
word bedroom	7	8	13
word behind	13	22	18
word bench	21	8	14
word better	-16	-26	-18
word big	16	9	7
word bite	-5
word board	44	49	45
word boards	54	61	57
word body	6	6	6
word book	-6	-6
word booked		-5
word both	-6	-7	-12
word bottom	12	16	6
word bottoms	6	6	6
word bout	-9	-13	-9
word bowl		-11
word bowls	6	6	9
word box			12
word boxes	21	14	10
word boys		-5
word br	-10
word branch	9	9	9
word brkr	-6	-6	-6
word brother		-7
word bump	10	16	9
word bunch	-6	-6	-6
word burn	-5	-8
word bus	6	6	6
word button	-10	-17	-12
word c	11
word cam		5	5
word car	10	10	10
word carton	-6	-6
word cast	6	7	9
word cat	-6	-7	-9
word ceilin's	-7	-7	-7
word center	-11	-10	-19
word cert	6	6	6
word change		-9	-5
word cheek	25	25	25
word chk	-10	-10	-10
word clean	5	5	10
word close	-7
word cock	-6	-11	-6
word code	-7
word coffee	-13	-18	-10
word cold	7
word collar	12	6	6
word color	-25	-24	-42
word colour		6
word come		-6
word common	-6	-6	-6
word company	-14	-27	-14
word cooling	-6	-6	-6
word copier	5	11	5
word core			8
word couch	20	12	12
word count		-13
word counter	12	16	16
word course	-10
word cousin	-5	-5	-5
word cover	6	5
word crank	15	15	15
word credit		7
word crumbs	-7	-7	-7
word ct	-10	-12	-11
word cup	9	8	15
word cut	27	31	33
word cuts	-5
word cutting	-8	-8	-8
word cycle	6
word cycles	-6	-6	-6
word dale		7
word dark	6	5
word dave	-5	-9	-5
word deal	-7	-7	-7
word defect	-68	-27	-20
word dentist	-6		-6
word device	-7	-7	-7
word dim	-8
word dining		9	6
word dinner	-10	-13	-16
word discharge		5
word do	-6	-12	-6
word dog	-9
word done	6	6	11
word down	6
word draft	-6
word dried	-6
word drum			14
word dry	19	9	10
word dust		-6	-5
word each			-7
word earliest	9	16	9
word earth	5
word east	20	17	14
word egress	6	12	6
word either		-7
word electric	12
word electrical	7	9
word else	-9	-17	-10
word end		-6
word everything	-8	-8	-15
word everywhere			8
word exam	13	7	7
word except	-24	-24	-22
word exhaust			-9
word expansion	18	18	18
word f	7	7	7
word face	-14	-17	-11
word factory		14	7
word far		-6
word fast	5	5	5
word feed	-5	-7	-9
word fella	-18	-20	-17
word fifth	-7	-8	-6
word final	10	13	8
word finger			8
word finish	-52	-40	-32
word fire		7
word first		-26
word fl	8	8	8
word flags	11	11	11
word flap	5	5	7
word flare	7	7	7
word flight		5
word float	21	11	12
word flow	-5	-6	-8
word fly	-9	-9	-9
word for		-9
word fourth		9
word free	-9	-17
word fresh	-11	-23	-9
word from		-7
word front	25	42	28
word front's	5	5	5
word frost	-11	-13	-9
word full			9
word furniture	5	10	5
word gary	-6	-5	-6
word gauge	-10
word glued		8	8
word go		10
word goes		11
word going		-6
word gone	-5
word grate	8	8	8
word grit	-6
word ground	-5	-7	-12
word guest	5	6	6
word guide	8	9	15
word guide's	7	7	7
word hair	-5	-8
word half			14
word halfway	-9	-7	-5
word hand	-29	-46	-37
word hanging	16	21	20
word happy	-16	-15	-28
word have	-5	-11	-5
word head		-12	-15
word height			11
word her		-9
word here	-7	-14	-7
word herself		6
word him		-7
word himself	6	11	6
word his	-10	-22	-10
word ho	-7	-13	-7
word holding	-6		-6
word home	-16	-18	-16
word horse	17	6
word hot	32	30	24
word house	-25	-33	-25
word htr	6	6	6
word hung	-6	-5	-9
word hvac	-10	-12	-7
word hydro	-5	-5	-5
word in	-13	-20	-19
word inside	-22	-10	-10
word instead		-6
word insurance	8	8	8
word into			-11
word invoice		-5
word iron	7	7
word is	-8	-19	-6
word it	-20	-22	-39
word it's	9	17	9
word itself	6	12	7
word job	-18	-19	-17
word kick	7	7	7
word kit	19	24	12
word knots	6	6	6
word laid	-6	-6	-11
word lane	-6
word last	-25	-21	-13
word late	-8	-8	-8
word later	12	5	5
word latex	17	9	7
word layers			6
word lead	22	17	28
word leaf	5
word lean	-6	-10	-6
word leaves			-5
word led	6	13	9
word left		7	13
word length	-42	-61	-61
word lens			-6
word level	-16	-11	-15
word lid	39	23	28
word linen		6	8
word liner		7	6
word lite	18	15	15
word little	-37	-36	-44
word living	12	9	11
word load	-7	-7	-7
word log	-8		-6
word look		-5
word loop	25	28	26
word loops	9	9	9
word lower	8	14	24
word luis		-5
word m		7
word machine	-16	-27	-28
word make	7	7
word man		5
word mark	22	28	38
word mat	-5
word match	-9	-16	-9
word me	-12	-18	-14
word means	-6	-12	-6
word metal	14		9
word middle	-25	-24	-28
word mill			-6
word mind		-6
word mine		-8
word more		10
word mother	-7	-7	-7
word motion	9	9	9
word mouse	6
word myself		-7
word n		14
word natural	-9	-14	-9
word near		9
word needs	8	19	17
word new	-8	-10	7
word next		-9
word nice	-16	-15	-29
word night	6	12	6
word noon	-12	-17	-17
word nope	-7
word north	-7	-11	-11
word number		-19	9
word numbers	9	18	9
word of	26	35	43
word off	-17	-32	-17
word old	36		39
word ones		6	6
word open	8	13
word or		-7
word oscar	-13	-24	-13
word other	-39	-24	-20
word out	-30	-45	-51
word outta	-8	-10	-8
word p	-9	-17	-9
word pack	17	21	30
word pair		11
word paper	11	9	16
word parlor	20	11	11
word part			7
word parts	-7	-7	-7
word patch	12		10
word peak	-6	-6	-6
word people	8	18	10
word permit		-10
word picture	14	17	25
word piece	21	31	13
word pile	-12	-10	-8
word pin			7
word place	-5	-7	-8
word please		8
word plumb		6
word pocket	6	6	13
word popcorn		6
word pot	10
word powder	5
word press	7		7
word pressure	-6	-6	-11
word price	5	10	5
word privacy	6	6	6
word prob	-5
word problem	6
word profile	9	7	7
word pulled			-6
word pulling	10	8	8
word push	-6		-5
word put	-33	-33	-38
word quantity		19	-7
word quick		-6
word r		-14	-8
word rain	-18	-17	-11
word raw			-11
word re	-10	-16
word real	-12	-8	-6
word rear	21	11
word rec'd	9	9	9
word regulator	17	18	18
word remains	8	8	8
word rest	-10	-11	-10
word return	9	5	15
word riding	8	8	8
word right	-18	-11	-13
word ring	9	-5
word rise	8
word rm	6	20
word rms	10	10	10
word road	-8	-6	-8
word room	28	18	12
word roots	-13	-7	-7
word rough			-6
word round	-13	12	-6
word row	-20	-26	-21
word rubber	13	14	21
word run	15	8	6
word rung			-7
word runner	9	14	8
word running	-11		-6
word rush		8
word s	-23	-29	-27
word same	-26	-21	-18
word sample	7	9	13
word samples	9	9	9
word say	-18	-12	-10
word school	-6		-7
word scrap	21	23	14
word scribe		6
word seal	14	10	9
word second	15	8
word self	10	19	10
word semi	-6	-6	-6
word shaving	-5	-5	-5
word sheet	-6	-16	-8
word sheets	24	19	31
word shift		8
word shut	-7	-11	-7
word site		-6	-15
word size	-17	-13	-11
word skin	-6	-6	-6
word slid	5		8
word slip	-7
word slow	-6	-9
word small	-12	-9
word somewhere	5
word soon		-10	-5
word sooner	-7	-15	-7
word spare	-15		-23
word spec	-9	-8	-11
word special	-5	-5	-5
word spice	5
word spin	-7	-6	-6
word spins	7	9	6
word spot	-9	18	-8
word ss	-8	-8	-8
word standing	-10	-5	-5
word station	7
word steam	6	6
word steel	12	18
word sticker		-9
word stock	6
word stop		6	14
word store	-17		-8
word storm	8	5	5
word straight	-15	-8	-16
word street	17	13	7
word strip	9	7	7
word strong			6
word structural	-6	-6	-6
word sucking	-5
word suction	6	6	6
word suite			12
word support	7	7	7
word supposed	-9	-11	-6
word swap	7	6	7
word table	17	23	13
word tables	8	8	8
word tag	5
word tails			-9
word tea		-7
word template		7
word that		-6
word the	36	58	54
word them	8	10	14
word then	-6	-11	-6
word there	9	13	15
word thermal	-5	-5	-5
word thing	-8	-11	-8
word third	10		-5
word those	-10	-7	-22
word tied			-5
word till		9
word time	-29	-32	-55
word tire	6	6	6
word to	6	11	6
word told			-9
word top	-18		-9
word total	-7		-7
word touch		-5
word trey		-6
word trouble	-6		-5
word trunk	5		5
word tube	6	6	9
word tubes	19	28	21
word turn	-6	-11	-7
word twice		-8	-17
word u		-5
word under	24	30	33
word unit	-16	-23	-14
word up	-6		5
word upper	19	15	28
word upstand	8	15	8
word urethane			8
word us		-6
word v	-12	-18	-12
word vacuumed	7	7	7
word verandah	6	6	6
word wait	17	20	11
word waiting	9	9	9
word wants	-18	-21	-15
word warranty	9	17	9
word waste	17	9	8
word way	-11	-16	-17
word ways	-5	-5	-9
word weather	-18		-6
word wedge	5	9	9
word weight	8	6	8
word weights	7	7	7
word went	-9	-6
word whenever	-6	-12	-5
word whoever	-22	-19	-17
word whole	-11	-18	-16
word width		-6
word wind	-10	-5	-9
word winter		-5
word with	-5		-11
word work			-8
word worst	-8	-9	-6
word wrap	-12	-7	-9
word wrong	-20	-22	-19
word x	-9	-9	-16
word you'd	-14	-8	-8
word zone			6
`;
