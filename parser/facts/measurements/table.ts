/** Written by tests/learn/readings.ts: what is seen of a figure, and hundredths for bare, said, near, in, ft, mm, cm, m, F, C, deg, %, V, A, psi, bar, kPa, in wc, ohm, cfm, uF, lb, W. */
export const READINGS = `
any	94	220
any flow		21
any power		-21
any slope		26
any torque		31
any volume		-31
apart			-47
begin false decimal current		35
begin false decimal length		-14
begin false decimal other		30
begin false decimal voltage		31
begin false quarter slope		20
begin false whole	-20
begin false whole current		-22
begin false whole other		-21
begin false whole power		-26
begin false whole temperature		22
begin false whole torque		31
begin false whole voltage		-24
begin false whole volume		-16
begin true decimal	-30	36
begin true decimal length		31
begin true quarter		32
begin true quarter length		31
begin true whole current		-23
begin true whole percent		27
begin true whole weight		-34
bound 	-27
bound  flow		22
bound  power		-21
bound  slope		26
bound  torque		31
bound  volume		-28
bound about	21	33		48
bound about area		47
bound about length		33
bound atLeast	-49			27
bound atMost		26
bound centers		41
bound centers length		41
bound hair		31
bound hair length		31
bound over	-40	-7		-23						-17	-43
bound under												33
clause before			28
clause before V			34
clause before ft			30
clause behind			13
clause behind deg			39
clause behind ft			55
clause false	-24
clause false flow		21
clause false power		-21
clause false slope		26
clause false torque		31
clause false volume		-31
digits digits decimal									-15			-15	24	16
digits digits decimal current		37
digits digits decimal other		28
digits digits decimal voltage		34
digits digits whole area		15
digits digits whole current		-50
digits digits whole pressure		63
digits digits whole volume		-32
digits digits whole weight		-48
digits words decimal		52		-22		-21		33	-20			50						42	46		-19
digits words decimal length		26
digits words quarter slope		20
digits words whole	-25
digits words whole angle		-33
digits words whole current		38
digits words whole other		-25
digits words whole pressure		-47
digits words whole temperature		44
digits words whole weight		7
end false # percent		19
end false +	-23
end false -	-19
end false <n>	-28
end false <q>	-18	-18
end false <t>	-21
end false a	-32
end false a length		28
end false all	-25
end false at length		-6
end false at pressure		33
end false be		-7
end false be length		-9
end false between	-21
end false bottom		31
end false bottom length		31
end false by	-53
end false cut	-13	18
end false cut length		18
end false decimal length		-9
end false decimal voltage		24
end false down		36
end false down length		31
end false from	37
end false good		35
end false good length		35
end false got	-32
end false has	-19
end false have	-42
end false in	-30	-30
end false is	-20
end false it	34
end false it's		36
end false like		31
end false like length		31
end false long	-27
end false maybe		-19
end false maybe length		-32
end false needs		55
end false now	-22
end false of	-23	-37
end false of length		-37
end false off	-17	24
end false off length		24
end false on	-29
end false other	-21
end false over		24
end false over length		32
end false put		-62
end false quarter slope		17
end false read	35
end false says	-22
end false take		29
end false take length		29
end false that's	-14	-11
end false that's length		-11
end false the	-23	-55
end false the length		-51
end false there's	-22
end false to	35	23
end false to length		14
end false took	-27
end false up		9
end false up length		31
end false wall		15
end false wall length		15
end false wants		-37
end false wants length		-37
end false was	29
end false whole	-29
end false whole area		31
end false whole current		-26
end false whole flow		38
end false whole volume		-16
end false with	-17
end false with length		-39
end false within		27
end false within length		27
end false x	-33
end true -	-27
end true <q>	-46	-44
end true a	-20	-22
end true about		34
end true about area		18
end true all	-27
end true are		-9
end true are length		-9
end true at		39
end true be		45
end true be length		46
end true by	24	27
end true by length		24
end true cut		19
end true cut length		19
end true decimal		33
end true decimal length		15
end true down		40
end true down length		40
end true every		29
end true every length		29
end true for	-41
end true good		22
end true good length		22
end true had	-33
end true have	13
end true in	-40
end true it		31
end true it length		25
end true it's	23	12
end true like		23
end true like length		25
end true maybe		25
end true maybe length		21
end true not	-48
end true of	-43
end true only		25
end true only length		25
end true out length		40
end true over	-21
end true reads		17
end true says		21
end true the	-31	-39
end true the length		-34
end true to	14
end true up		39
end true up length		39
end true was		-36
form decimal						-16			-16				24	20				24
form decimal area		20
form decimal current		35
form decimal other		28
form decimal pressure		35
form decimal voltage		34
form quarter slope		21
form whole	-27
form whole current		-29
form whole flow		18
form whole torque		31
form whole volume		-17
group one	-25
group one decimal		31		-10		-17			-17				26	21				26
group one decimal area		20
group one decimal current		31
group one decimal other		28
group one decimal pressure		35
group one decimal voltage		34
group one flow		21
group one quarter slope		21
group one slope		26
group one torque		31
group one volume		-28
group one whole	-26
group one whole current		-23
group one whole flow		18
group one whole torque		31
group one whole volume		-14
group pair1					16
group pair1 whole		23			16
group pair1 whole length		29
group pair2		20		67
group pair2 decimal		15
group pair2 decimal length		15
group pair2 fine		31
group pair2 fine length		31
group pair2 length		23
group pair2 quarter		32
group pair2 quarter length		32
group pair2 whole				66
group pair3	-34
group pair3 whole	-34
group range1	-29
group range1 whole	-29
head # current		25
head # power		-54
head # slope		21
head # volume		-23
head aff		20
head aff length		20
head all		18
head all length		22
head back	-36
head board	-37
head bracket	-19
head center		44
head center length		44
head centre		-18
head centre length		-18
head cold		18
head corner	-20
head deep	41			64		33
head done	-24
head gap		21
head gap length		21
head high	13	25				37		32
head high length		24
head higher		21
head higher length		21
head hole		35
head hole length		35
head layer	-23
head long								41
head lower		32
head lower length		32
head max						33								19
head nos	-25
head ones		-45
head ones length		-45
head panel	-16
head round		-28
head round length		-28
head run		34
head run length		34
head screw	-22
head shy		24
head shy length		24
head side	-22
head spot	-18
head the	-25										33
head thick	33					56
head top		29
head top length		29
head tread	-21
head way		-8
head way length		-8
head wide				32		30
headsort # current		25
headsort # decimal		25
headsort # decimal area		20
headsort # decimal current		22
headsort # decimal other		20
headsort # decimal voltage		34
headsort # one current		31
headsort # one power		-46
headsort # one slope		21
headsort # one volume		-20
headsort # pair3	-34
headsort # power		-54
headsort # range1	-29	-30
headsort # slope		21
headsort # volume		-23
headsort # whole current		17
headsort # whole power		-43
headsort DET one length		-28
headsort DET whole	-16
headsort OPR		-45
headsort OPR length		-45
headsort OPR one		-45
headsort OPR one length		-45
headsort OPR whole		-45
headsort OPR whole length		-45
headsort Votherp	-18
headsort Votherp one	-18
headsort Votherp whole	-18
headsort Vworkb	-44
headsort Vworkb one	-26
headsort Vworkb whole	-44	-25
headsort Vworkbp		34
headsort Vworkbp length		34
headsort Vworkbp one		34
headsort Vworkbp one length		34
headsort Vworkbpp length		21
headsort Vworkbpp one length		18
headsort Vworkpp	-14	-15
headsort Vworkpp length		13
headsort Vworkpp one	-32
headsort Vworkpp pair2	51
headsort Vworkpp whole	-14
headsort Vworkpp whole length		39
headsort Vworks	-34
headsort Vworks one	-22
headsort Vworks whole	-34
headsort goods	-24	-27
headsort goods length		-17
headsort goods one	-23	-44
headsort goods one length		-41
headsort goods whole	-24	-9
headsort goods whole length		24
headsort tarea	-23	44
headsort tarea one	-23
headsort tarea whole	-23
headsort tsurface	-20	19
headsort tsurface one	-27
headsort tsurface whole	-20
headsort tsurfaceVotherb		21
headsort tsurfaceVotherb length		21
headsort tsurfaceVotherb one		21
headsort tsurfaceVotherb one length		21
headsort tsurfaceVworkb	-26	-33
headsort tsurfaceVworkb length		-50
headsort tsurfaceVworkb one	-26	-33
headsort tsurfaceVworkb one length		-50
headsort tsurfaceVworkb whole	-26
headsort tsurfaceVworks	-17
headsort tsurfaceVworks one	-17
headsort tsurfaceVworks whole	-17
headsort w decimal	58
headsort w pair2	39	49
headsort w pair2 length		49
headsort w whole pressure		-14
if false	-26
if false flow		21
if false power		-21
if false slope		26
if false torque		31
if false volume		-31
is false decimal none	35
is false decimal none current		34
is false decimal none length		-23
is false decimal none voltage		27
is false decimal own		53
is false fine area		24
is false fine area length		24
is false fine part		36
is false fine part length		36
is false fine pointer		37
is false fine pointer length		38
is false half own		23
is false half own length		23
is false half person		-48
is false half person length		-43
is false quarter fixture		-14
is false quarter fixture length		-14
is false quarter material		-27
is false quarter material length		-27
is false quarter part		52
is false quarter part length		55
is false whole area		30
is false whole fixture length		29
is false whole material	-22	35
is false whole material area		42
is false whole material length		28
is false whole none	-46
is false whole none angle		-31
is false whole none area		14
is false whole none flow		-24
is false whole none temperature		20
is false whole own	-25
is false whole own length		29
is false whole part	-30
is false whole person	-21
is false whole person area		-18
is false whole person percent		-7
is false whole person volume		-19
is false whole pointer	-16
is false whole tells		-17
is false whole tells length		-26
is false whole tool		-17
is true fine fixture		-30
is true fine fixture length		-30
is true fine pointer		-23
is true fine pointer length		-26
is true quarter own		36
is true quarter own length		37
is true whole material length		29
is true whole none	30	-8
is true whole own	-16	51
is true whole own length		28
is true whole person length		-32
is true whole pointer	-10	-8
is true whole surface	88
mate pair			40
mate pair ft			61
next air									-19
next ask						28
next attic				35
next bad										43	-27
next bar				-22		32
next bedroom				-11					43
next bottom						45
next bracket				57				25
next broken						-31						-22					28
next call				42											-27							-13
next cap															-20							24
next carpet											34
next changed															-21							23
next check				27					32
next clear				28		10
next closet				40
next coil				-37					55			38						43
next cold				44		22												-36
next corner				-14		39
next cut				36
next cut out																	54
next dead				25		42									26
next deep				66									31
next door									35
next drop				48									54
next dry				-21
next edge						32
next fall						-32
next fan				25
next figure					59
next floor				50	35
next flue																		32
next frame									41
next gap						-43						31	32
next garage				-19					42
next glass						36											28
next glue															-16							18
next glued						48
next go																17
next goes				69				21
next going				-24		48
next gone				-25
next ground											39
next guy				22
next hair						52
next hanging				43																		33
next head				79						18
next hinge				-22		7
next hit				28
next hole				39
next house				-18
next hung				-48											35
next joist				82					28					20
next keep						20							28
next keys												-21
next kit					50
next kitchen																				22
next laid				41
next last				27
next leave				-13		-21									28							-27
next left				33
next level				27
next long						28
next loose				-32									22
next low						-16
next make													30
next me						-39
next mud				-45					59			36
next neighbor												29
next new																					19
next old					31				33				21		-27
next one						22
next open				-19
next opening						21
next other				27									14
next packed				-17					53						24
next panel													16
next part				37
next pass				64																34
next patch																				35
next pipe					58	28
next plate				-18					32
next post				23		-27
next pull				73														-10
next pulled						-24						21
next pump				63
next put				22
next ran					52
next read									19									30
next replaced				-26																	42
next reset				-14
next return										21
next round				35		57
next run				50
next sand															23
next says									45					32					46
next screw							36
next screwed				15
next seal				-12									37
next see				-14					-20
next shop				20
next short				-21																-19
next side				-52
next spare				35		57
next split																				15
next step				42
next straight				27
next stuck																					49
next stud				50
next swap													42	-20
next take				-25
next tank				-11					43
next tenant				-11	42
next the lady				30
next the wrong								32
next thing										33	16
next think									35		-24
next tile				-22								20
next time												32
next took													32							26
next top				-14		41									24
next truck				51																	22
next tub				52
next use				-13
next used				-35	38
next wait				-13
next wall									38
next want				24		32			57
next washer													23
next water				17								27
next way				-10	36										46
next went															38
next wet				36
next wide				-25		31
next work						11							38
next x				-43																23
not false	-25
not false flow		21
not false power		-16
not false slope		26
not false torque		31
not false volume		-31
not false weight		20
not true	-37	-31
not true length		-29
note			20
note C			24
note bar			23
note cfm			64
note cm			25
note in wc			6
note in-lb			44
note micron			25
note mm			19
note ohm			30
note psi			25
note sq ft			52
note sq m			44
noun #	-30	-17
noun # metric																	37
noun 2 x length		72
noun ^base		27
noun ^base length		27
noun ^bottom		44
noun ^bottom length		44
noun ^deep length		35
noun ^door		45				8
noun ^door length		39
noun ^floor	27	24		37										23
noun ^hole	-39
noun ^joist		-17
noun ^joist length		-18
noun ^kitchen	-30			-10
noun ^me	-22	-47
noun ^middle		-8
noun ^middle length		-8
noun ^new		-71
noun ^new length		-79
noun ^panel	-26	36
noun ^panel length		34
noun ^screw		-65
noun ^screw length		-71
noun ^side						40
noun ^tile	-20
noun ^tread	-31
noun ^wide		28
noun ^wide length		28
noun ^window	9			52
noun base		30
noun base length		30
noun beam		20
noun beam length		20
noun bottom		53
noun bottom length		52
noun bowl															39
noun ceiling	-7	39						32
noun ceiling length		39
noun closet		22
noun closet length		21
noun code us				32
noun corner		-28				29					38
noun corner length		-30
noun curb		18
noun curb length		18
noun door	53	40		50		31
noun door length		40
noun edge		37
noun edge length		37
noun filter	-22
noun flange		23
noun flange length		23
noun floor	30																					-15
noun fridge				31		28			-48						34
noun gap		36
noun gap length		36
noun hole				45		24
noun hole us				73
noun house	50			-38	68							25
noun inspector	-39
noun jamb		-23
noun jamb length		-23
noun joint		61
noun joint length		61
noun joist		65
noun joist length		63
noun landing		17
noun landing length		17
noun last	-20
noun leg		-11
noun leg length		-12
noun line		36
noun long	-29				-21
noun long us					-22
noun me		-35												47
noun me length		-35
noun meter percent		22
noun mirror		58
noun mirror length		58
noun more		-41
noun more length		-41
noun new		-57
noun new none				25											23
noun niche		29		37			21
noun niche length		29
noun opening	24	25		69
noun opening length		26
noun oven	31								44				37
noun overhang		47
noun overhang length		47
noun paint				-18								32
noun panel	-63					-21
noun plate	-43			-23										21
noun plate us				-25										40
noun post		22
noun post length		21
noun pressure		18
noun pull		72
noun rise		30
noun rise length		29
noun riser		49
noun riser length		49
noun screw				30
noun screwdriver		54
noun screwdriver length		54
noun seam		18
noun seam length		18
noun side	-17	28		23
noun side length		33
noun side us									31
noun slab length		29
noun slide		32
noun slide length		32
noun slider		18
noun slider length		18
noun slope		-19
noun spec	-25
noun stud		54
noun stud length		54
noun supposed	-53			-26	37										-40
noun supposed us				-19	39										-41
noun temp		15
noun temp temperature		15
noun tile	-45	45		-30
noun tile length		45
noun tile us				-32
noun track		30
noun track length		30
noun unit				15
noun wall						40
noun wall metric						35
noun wall none				33					-20	35	-26
noun wall us												28
noun waste		-7
noun water		11
noun water length		11
noun window	-33	26		-28
noun window length		27
nounsort #	-31
nounsort # angle		-30
nounsort # area		-19
nounsort # percent		48
nounsort tarea	-33	38
nounsort tarea <12					46
nounsort tarea <2															-16							19
nounsort tarea <3								25
nounsort tarea length		23
nounsort tarea none one									20
nounsort tarea us one					15
nounsort tarea's	-45	19
nounsort tfixture	-26	34
nounsort tfixture <40				18
nounsort tfixture <600						49
nounsort tfixture <8				51
nounsort tfixture length		34
nounsort tfixture metric one						62
nounsort tfixture none one									33
nounsort tfixture us one				-9
nounsort tfixture's		-31
nounsort tfixture's length		-31
nounsort tmaterial	-36
nounsort tmaterial <1000						68
nounsort tmaterial <12																			36
nounsort tmaterial <16				-22
nounsort tmaterial <20				63	-22
nounsort tmaterial metric one						52
nounsort tmaterial none one						23
nounsort tmaterial percent		24
nounsort tmaterial us pair2				-9
nounsort tmaterial's	11	46
nounsort tmaterial's length		38
nounsort tmaterial's none one				39		32
nounsort tmaterial's us one				52
nounsort tmaterialVworkb	-24	19
nounsort tmaterialVworkb <5				36
nounsort tmaterialVworkb length		18
nounsort tmaterialVworkb metric one												28
nounsort tmaterialVworki		45
nounsort tmaterialVworki length		41
nounsort tmaterialVworks		-45
nounsort tmaterialVworks length		-62
nounsort tmaterialVworks us one				29
nounsort tpart <2														26
nounsort tpart <26				-15										15
nounsort tpart <3				30
nounsort tpart <50				61																		33
nounsort tpart <72				-22		-16			56	57												-27
nounsort tpart <8									-22					27
nounsort tpart metric one												36
nounsort tpart none one									53					22							17
nounsort tpart percent		22
nounsort tpart temperature		43
nounsort tpart us one				21					32
nounsort tpart's	14
nounsort tpart's length		9
nounsort tpart's none one													50
nounsort tpart's us one				31					19
nounsort tpartVworkb <5																					37
nounsort tpartVworkb none one				54																	34
nounsort tpartVworkb us one				30																	46
nounsort tpartVworks		52
nounsort trole	-42	18
nounsort trole length		52
nounsort tsurface		37
nounsort tsurface <1000						78
nounsort tsurface <16				55
nounsort tsurface <2				-17	40
nounsort tsurface <20									27			29
nounsort tsurface <26				36					11	28
nounsort tsurface <3				-30		-37		27
nounsort tsurface <600						50																-20
nounsort tsurface <8				47												36
nounsort tsurface length		38
nounsort tsurface metric one																18
nounsort tsurface metric pair2				-22		38
nounsort tsurface none one										-19		32
nounsort tsurface none pair2						54
nounsort tsurface pressure		28
nounsort tsurface temperature		-26
nounsort tsurface us one				-17					29
nounsort tsurface's	40	36
nounsort tsurface's length		36
nounsort tsurface's none one				31						15			-15		25
nounsort tsurface's us one				36	-27				-6		30	49			44
nounsort tsurfaceVotherb		37
nounsort tsurfaceVotherb length		37
nounsort tsurfaceVworkb none one				35
nounsort tsurfaceVworkb us one														40
nounsort tsurfaceVworki		51
nounsort tsurfaceVworki length		31
nounsort tsurfaceVworks	-19	64
nounsort tsurfaceVworks length		65
nounsort ttool	-38	-16
nounsort ttool length		41
nounsort ttool us one				-18						52
nounsort ttoolVworkb		75
nounsort ttoolVworkb length		77
nounsort w	-19
nounsort w <100						31			-25										11	30
nounsort w <1000						-40
nounsort w <130									45				-30
nounsort w <16																			30
nounsort w <2				26
nounsort w <20				58	-22
nounsort w <26													56									-19
nounsort w <32														40
nounsort w <40						32
nounsort w <50					-21				50					29
nounsort w <60									27
nounsort w <72				30					36
nounsort w <8				-18	27
nounsort w area		21
nounsort w both one						24								47				24
nounsort w current		-67
nounsort w metric one						21											21
nounsort w other		-50
nounsort w pressure		31
nounsort w us pair2				-29
nounsort w's none one						37			24									27
nounsort w's us one						-23			22		42
nounsort wed	-50	35
nounsort wed length		35
nounsort wed us one				-18	37										-39
nounsort wing	-22	41
nounsort wing length		42
nounsort wly length		60
open 	-27
open  angle		29
open  area		21
open  current		-26
open  flow		20
open  percent		62
open  power		-10
open  slope		25
open  torque		28
open  volume		-45
open -	-55	28
open - length		29
open - temperature		22
open also	-33
open because	-12
open like		60
open like length		60
open now	48
open okay	-44	31
open so	-35
open then	-47
own aff		20
own aff length		20
own air		34
own anything		-25
own anything length		-25
own asked	37					26														24
own attic		52
own attic length		56
own b	-48			-25
own b us				-26
own baluster		29				36
own baluster length		29
own bar	-22					-24									-22	73
own bar metric						-39										89
own base	-20	34
own base length		34
own bath								23
own bay	-38			-21
own bays	-22
own beam		45
own beam length		45
own bed	-26
own bedroom	-17	37
own bedroom length		38
own better	-51
own big	-23
own bit		-24										31
own bit length		-24
own black									35
own black us									38
own blind	-21
own block	-48	28		-15
own block length		28
own board	-37	-22
own board length		-25
own bolt	-38
own bolted						21
own book	18	42		47
own book length		42
own book us				47
own bottom						19							21
own bottom none						35
own bottom us													27
own bowed		56
own bowed length		56
own bowl															36
own box	-54			-16
own box <8																						-26
own box none				-13					-17
own box us				-15
own boxe	-26	-27
own boxe length		-27
own br	-43
own bracket		49				26
own bracket length		46
own bracket none						28
own brick		42
own brick length		42
own bring	-29	-43												31
own bring length		-17
own bring us														33
own broke	-37			-13
own broke us				-14
own broken	-31
own buy		33
own buy length		33
own cabinet	-27	-16
own cabinet length		-16
own cable		82
own cable length		82
own call				33										32
own call us				35										34
own cap				19					-27		-23										65
own cap us				23					-17												44
own carpet		-22
own carpet length		-22
own ceiling				36				24
own ceiling <3				26				32
own ceiling none								33
own ceiling us				29
own center				27
own center us				27
own centre	19	-13				74
own centre length		-9
own chipped	-24
own circuit	-38	-38
own circuit current		-16
own clamp		-26
own clean	-18
own clear	-7	40		-7
own clear length		42
own clear us				-7
own clearance		30
own clearance length		30
own closet	58	27		63	24
own closet length		26
own closet none				22
own closet us				59	29
own coat	-30
own code		-15																		35
own code us																				37
own cold	-33	35							24
own cold us															34							-35
own coming															57
own coming us															59
own copper		-50
own copper length		-50
own corner	-31	20
own corner length		19
own corner us												31
own count	-67
own counter		44
own counter length		44
own course		-33
own course length		-33
own cover	-55	-33		-30
own cover length		-45
own cover us				-32
own crack		52
own crack length		52
own cracked	-29	48
own crown		25
own crown length		21
own curb		25
own curb length		25
own cut		23					21										19
own cut <2				-15
own cut <3				-13		-12
own cut <5								33
own cut length		30
own cut metric				-26		40	47	22									43
own cut out		28
own cut out length		26
own dead	-23
own deep	13				22	29
own deep <12				25		-19	24
own deep metric						44	22
own deep us					30
own den		17
own den length		17
own different	29			45
own door		28
own door <5												37
own door length		37
own door metric						49
own door none						25
own double	-21
own drain				39
own drain us				42
own drawer	-23	33
own drawer length		33
own drawing		53
own drilled	-20			-15
own drilled us				-19
own drip	-43
own drop	-51			-14									15
own dropped		50
own dropped length		50
own dry	-39																					-27
own drywall		55
own drywall length		32
own duct		19
own edge	-27
own end	-39	35
own end us				-17
own except	-17								-19
own face		78
own face length		45
own fall		-30
own fall length		-49
own fan	-23								20			-22										32
own filler		17
own filler length		17
own filter	-23
own finish	-19	-20
own finish length		-21
own first	-29
own fixed	-13
own flange		27
own flange length		27
own flat		55		31
own flat length		55
own floor				40
own floor none				57
own floor us				29
own footing	36	36		63
own footing length		36
own footing us				63
own found	38	36		-12
own frame	-27
own fridge				31		29			-47						32
own front	-44
own front length		52
own full	-18
own gap	64	48		52		60
own gap length		48
own gaps		88
own gaps length		88
own garage	25	25		34					-16			34
own garage us												42
own gas length		-28
own gate		46
own gate length		46
own gauge		34
own gave		-29
own get	-13	-34
own get length		-21
own get none									26
own get us													25
own glass	28	-50											34
own glass length		-50
own glass us													36
own glue	-34	-15
own glued	-14	-43
own glued length		-46
own go				25
own go length		18
own go none				9
own go us				30
own goes		-14
own goes length		-19
own goes us				29
own going	39	50				79									18							-18
own going length		45
own gone	-22					29
own grab	-27
own grade		23
own grade length		23
own gray				31
own ground		58
own guy	-33
own hair		-21
own half		-53
own half length		-24
own hall	-60	31
own hall <5									33
own hall length		26
own hallway		26													-24							21
own hand	-22
own hand none									19
own handrail		56				42
own handrail length		56
own handrail none						50
own hang				34
own hanger	-24
own hanging				22
own head	-29
own header		19
own header length		19
own hearth		38
own heat	-46
own heater		-67
own held		21													57							-55
own held us															59							-58
own high	37	38				64		27
own high length		38
own high metric						38
own higher		21
own higher length		21
own hinge				22
own hinge us				29
own holding	42								67						34	38
own holding us															49
own hole		37		56
own hole <3				16		-25
own hole <5				-14
own hole length		37
own hole metric				-32		50
own hole none				62
own hole us				61
own hollow						32
own hot		26
own house	21			-10	45										15					18
own house length		-35
own house none												19			30
own house us				-9	54															25
own hung		-12
own hung length		-9
own inspector		41		37
own inspector length		41
own inspector us				36
own instead	24			37
own instead us				37
own itself				24		27
own joint	-59	23		-52
own joint length		23
own joist												40
own key	-21
own kitchen	-49
own kitchen us				-23
own l		37
own l length		28
own land		21
own land length		21
own landing		19
own landing length		19
own last	-19			28
own last length		38
own last us				37
own layer	-22
own lean		38
own lean length		38
own leave	-43	30
own leave length		30
own left	30	28		46		25
own left metric																39
own left none				37		42
own left us				42
own leg	8												39
own leg none													43
own length		-43
own length length		-43
own light	-34	37
own light length		39
own line		27
own little															57
own lock	-22			-13		-17							60									-19
own long				45				25
own long us				58
own loop		42
own loose	-23
own low		31													-23							22
own low length		29
own lower		65
own lower length		63
own make		-7		-17					35
own make us				-20
own mark	-14
own marked		26
own marked length		26
own mat		13
own max	-15			-19		29								20
own me	-21													27
own me length		-9
own measure		51
own measure length		47
own measured	36	33																		57
own measured length		27
own measured us																				65
own meter length		-24
own meter percent		24
own mid		38
own middle	-22	56		35					-20
own middle length		56
own mirror		58		32
own mirror length		58
own mirror us				33
own missing	-59
own more	-30	-19
own more <2				28
own more length		-18
own move		32
own move length		32
own moved		25
own moved length		25
own n													38
own nail	-23
own nailed				25
own need	-21	-16
own need <2								23
own need length		-19
own need metric								24
own need us				36
own new	-15
own new length		7
own new us																						18
own niche				37			21
own nos	-25
own nosing		-11
own nosing length		-11
own number	-33	39
own number length		42
own oak	-50
own oc		25
own oc length		25
own old	-23
own old us				-14
own one	36													46
own open	-22																					11
own open us				-45																		16
own opened	-41			26
own opening				53
own opening us				31											-20							23
own order	-28	-19
own order length		-19
own other													14
own other none													30
own out of plumb		30
own out of plumb length		23
own outlet	-25	18		23
own oven		13				-20			38				33
own overhang		53
own overhang length		53
own owner	-16					11
own pad		68
own paint		-52										22
own paint length		-52
own paint us				-19
own pane	-28
own panel	-32
own pantry	-18	30
own pantry length		30
own paper	-17
own patch	70			56								31
own patch us				65
own picked	-44			-19
own piece				50
own piece us				53
own pipe		-24				-15										30
own pipe length		-27
own pitche		32
own pitche length		32
own pitched		36
own pitched length		36
own place	-19	34
own place length		35
own plaster		50
own plaster length		39
own plate	-42			-17										17
own plate us				-23										37
own plug		-41
own plugged	-11
own plumb		-37
own plumb length		-37
own ply		-44
own ply length		-44
own plywood		-13
own point	-32
own post	-19	24									27
own post length		23
own post us											31
own pressure	63	29		-25		-29									88	27	31
own pressure pressure		27
own proud of		50
own proud of length		50
own pull		70													-31							33
own pull us															-33							35
own pulled	-14	32
own pulling		20
own pump		57
own put		-38				-18									51
own put length		-30
own put none									24
own put us															69							-32
own rail		22		22
own rain	-32
own ran	-11								20
own range		-32												43
own range length		-32
own rated																					29
own read	22			-23								39	32	-25					26		43
own read none													30	-27							62
own read percent		49
own read us				-32								40							24
own reading	32	35		-21						21	-28	36	38					18
own reading none												47	53	-18
own reading percent		27
own red																			39
own rest		-20
own rest length		-26
own return	-42	29							21
own return us									29
own reveal		55
own reveal length		55
own rigid		-28
own rigid length		-28
own ring		30
own ring length		30
own rip		35
own rip length		35
own ripped		34
own ripped length		34
own rise	30					35			39
own rise none						40
own riser		56		-24		37
own riser length		56
own room												-16
own rotted					-26				40
own rough opening		25
own rough opening length		25
own round	22					36
own row	-20
own run	7	49			19									30
own run length		44
own run us				26	26
own running									26		-34
own running length		-22
own runs	-33	52
own runs length		52
own s	-26
own sags		23
own said	28			-11					-35	51		56										-33
own said us									-36	53					32							-34
own salon	-29														-15							18
own sand	-46
own sanded	-75
own say		51
own say length		34
own says	-18
own says <16												27
own says length		-22
own says us				26					21
own screed		-6
own screw		-27
own screw length		-24
own screw us				22
own seam		40
own seam length		40
own see	-27	24
own see length		24
own sent	31	-15		40
own sent length		-15
own sheet	-20
own shelf		13		35		31
own shelf length		13
own shelf us				42
own shop	-44	40		-23
own shop length		40
own short	-29				28
own short us					34
own shot	-15
own shy		35
own shy length		35
own side		37		24
own side <5				37
own side length		39
own side metric						19
own side none				33		22
own sill		35
own sill length		35
own sink		31													25
own sink length		28
own sink us															28
own sit	-52	28				-37
own sit length		28
own sitting		40													36							-35
own sitting length		43
own sitting us															36							-35
own slab	-22
own slab length		38
own slat	-20
own slate	-22
own slider		34
own slider length		34
own slope		26
own slope length		19
own snaked		54
own snaked length		54
own spacing		22
own spacing length		22
own spec	-25
own spin	-26
own split	-36	62
own split length		62
own spot										32
own sprayed	-35
own spring	24			-20							58
own stain	-27
own stair		38				25
own stair length		38
own standing		27
own standing length		27
own start	-36								32
own static		25																				-27
own static pressure		21
own step		33		28
own step length		72
own step none						31
own step us				38
own stick		-44
own stick length		-34
own stile		-10
own stile length		-10
own stop		-24
own strip		-35
own stripped	-20
own stud	-32
own supposed	-58			-30	35										-38
own supposed us				-20	38										-40
own swapped		-86
own take	-27			-21		22							29
own tall	38			23	58				-17
own tall us				23	58				-17
own tap		-67		-21		42			60	27
own tap us				-12		34			61
own tape	-22			-15
own temp	17	16		-12					54	24
own temp temperature		16
own test		52
own tested	49			20												39				31	43
own thermostat				-21					61
own thick	28					54
own think		38
own tile	-71			-25		-16
own tile metric						-44
own tile none				-38
own time	-32	-38				-24										31
own time length		-38
own time metric						-31										39
own toilet		20
own too deep		28
own too deep length		28
own too high		27
own too high length		27
own took	-14	23
own took <5				44
own took length		21
own took none				40					25
own top	37	31		57		34
own top length		24
own top none				22
own top us				64
own total	22					33								20
own track		33
own track length		33
own trap		50		16
own trap length		55
own trap us				18
own tread	-31	38
own tread length		38
own tub length		37
own tube		-58
own tube length		-58
own turn	-16								19
own turn none									25
own turned									-25		36
own unit	-42	34		22
own unit length		29
own unit us				31
own upstair				39
own upstair us				45
own us length		32
own used	-22	-31		-13
own used us				-15
own valve	23			37
own vinyl					-25				40
own vinyl us					-25				40
own vs		63
own wall		30
own wall <3						-33
own wall <5										21
own wall length		32
own wall metric						28			-17	28
own wall none										22
own wall us				26
own want		26
own want <12				11
own want <16				44											54
own want <40				-16		27			38
own want <5																27
own want length		39
own want metric																26
own want none									24	22
own wanted	-24
own wanted us				34
own washer				48					-19
own waste length		-24
own water	-9	70		-18					72
own water length		65
own water us				-19					76
own way				34
own way us				37
own went	-13			21																19
own went none				42
own went us																				26
own wet		55
own wet length		41
own white	-22	-52
own white length		-52
own wide				33
own wide us				23
own window	-28	34
own window length		35
own window metric						23
own window us				-21
own wood		61
own wood length		40
own x						12
own x none						36
prev air		69													34
prev attic	31	36							34												34
prev attic length		35
prev attic on									37												36
prev bad		-15
prev bad length		-7
prev baluster				36		24
prev baluster on				36		24
prev bar		7				25
prev base	-37
prev base length		7
prev basement	30	42		47
prev basement length		42
prev basement on				47
prev bath	-26			26					-25						14
prev bath length		-25
prev bath on															21							-17
prev bathroom	-36	37
prev bathroom length		37
prev bed	-50			-11	-35	40
prev bedroom	36	-39			45
prev bedroom length		-46
prev bedroom on					47	11
prev bent		54
prev bent length		54
prev black		-24
prev black length		-27
prev blind		-32
prev blind length		-32
prev block		-48
prev block length		-35
prev board	-47	-24				-24
prev board length		-27
prev board on						-25
prev bottom		44										21					29
prev bottom on												23					32
prev box				-18	37														30
prev box length		16
prev box on				-18	37														30
prev bracket	-19	-12									42
prev bracket length		-29
prev bracket on											45
prev bring		39
prev bring length		39
prev broken		26
prev buy		-50
prev call		-16																	49
prev call length		-16
prev carpet		47
prev carpet length		41
prev ceiling	-48			-15
prev ceiling on				-16
prev center		9
prev center length		9
prev check		31
prev check length		31
prev checked		46
prev chimney		24
prev chimney length		22
prev clean		30
prev cleaned	18								32
prev clear		27
prev clear length		27
prev closet		16										25
prev closet on												28
prev coat				36					-12
prev concrete	-45	18
prev concrete length		10
prev corner		53		27
prev corner length		51
prev corner on				36		-17
prev count	-34
prev cover	-21	49		-15
prev cover length		49
prev crack		27
prev crack length		27
prev cracked		-22
prev cracked length		-22
prev crown		25
prev crown length		32
prev curb		7
prev curb length		21
prev cut	15	40
prev cut length		38
prev cut on						24											14
prev day		-18
prev deck		51		26
prev deck length		51
prev deep	41			57					28
prev deep length		33
prev deep on				57					28
prev dining room		57									48
prev dining room length		58
prev dining room on											49
prev door	-46	32
prev door length		29
prev drain		-45
prev drain length		-35
prev drop	-47	45		-20
prev dry	-35	54										19
prev dry length		44
prev dryer				-15									47
prev dryer on				-15									47
prev drywall		18
prev duct				40																35
prev duct on				40																35
prev dug		73
prev dug length		73
prev end		48
prev end length		49
prev enough		69											29
prev enough length		45
prev enough on													29
prev except		-7
prev face		-42
prev fan	62	-71			47							31								13
prev fan on					47							31								13
prev fence				46								15
prev fence on				49								16
prev finish	-44	-39
prev finish length		-53
prev first	-36	41										-25
prev first length		41
prev first on												-27
prev flat		14		-15		12
prev flat length		25
prev flat on				-15		12
prev floor				32					-21
prev floor on				38
prev flush		-32
prev flush length		-32
prev foam		53
prev foam length		53
prev found		40		29
prev found length		40
prev found on				29
prev frame		70
prev frame length		70
prev fridge	60				74				-19						21
prev fridge on					74				-19						21
prev front	-47	-12
prev front door		27
prev front door length		27
prev front length		-36
prev gap		61				19
prev gap length		61
prev garage	-37	-10
prev get												26
prev get new											35
prev get on				24								33
prev glass	25	18		37		41
prev glass length		18
prev glass on				37		41
prev glue		-44
prev glue length		-31
prev glued	-24	-19
prev glued length		-27
prev go				19		24
prev go new						21
prev go on				24
prev goes	-26	14		-20
prev goes length		14
prev goes on				-21
prev going	-47							34							-28
prev going on								34							-28
prev gone									-20		-18
prev gone on						18			-24		-22
prev guy length		28
prev gym		57
prev hall		-18				23		16	-25		-19
prev hall on						27		19	-29		-22
prev hang				43
prev hang on				43
prev hatch length		47
prev head		47										31
prev head length		45
prev height		67
prev height length		67
prev held									27									29
prev high	17					46
prev high on						47
prev hinge		-10							-33	-28
prev hinge on									-40	-33
prev hits		44
prev hits length		44
prev hold		42							55
prev holding				16					35
prev hole	18	52		26		42
prev hole length		52
prev hole on				31		45
prev house	-28	64
prev house length		65
prev house on																						-39
prev hung		40		58
prev hung length		39
prev hung on				62
prev inspector				48
prev inspector on				48
prev island	31					23							19		29
prev island on						24							20		30
prev joist		-21
prev joist length		-23
prev kitchen	-24
prev kitchen length		-12
prev know						40
prev laid		34
prev laid length		27
prev last	-19	39
prev last length		38
prev latch		39
prev latch length		39
prev laundry		10
prev leak		25
prev leak length		24
prev leave		-26
prev leave length		-26
prev ledger		-21
prev ledger length		-21
prev left		31		-13	28					25		21
prev left length		29
prev left new				-13					-23	40	-27	32
prev left on					39
prev lid		18
prev light		43											20
prev light length		54
prev light on													20
prev line	21			-25	23				38
prev line length		-16
prev line on				-26	24				39
prev living room		30
prev living room length		41
prev long		66							16
prev long length		51
prev long on				27
prev long wall		31
prev long wall length		31
prev look	-17
prev loose	-35
prev loose on									30
prev lot	-25
prev low	-14	66											36
prev low on													39
prev made	13			25			24
prev make		38
prev make length		32
prev me		-22
prev me length		-16
prev measure		43
prev measure length		43
prev measured	31	68		39		-14
prev measured length		68
prev measured on				40
prev meter									-17			26	45							-37
prev meter on									-17			26	45							-37
prev missing	-29	13
prev missing length		13
prev more	-37	34						25
prev more length		33
prev more new								34
prev more on				29
prev move		44
prev move length		44
prev mrs	29					52
prev need		-31
prev need length		-39
prev need new						27		29
prev new	-36			-15
prev new length		-30
prev new new									16
prev new on				-18									27
prev number	-54	33		-27
prev number on				-27
prev oak	-52	59		-42					-19			53
prev oak on				-42								53
prev old	-26	67							25			-16	24
prev old length		75
prev old on									25			-16	24
prev one						11
prev open	-16	50
prev open length		71
prev opening		-7
prev opening length		-7
prev order	-76	-98		-17
prev order length		-87
prev order on				-17
prev outlet		-15
prev oven						28
prev paint	-38
prev panel		49		40
prev panel length		52
prev pantry		54
prev pantry length		54
prev pass									30		-26
prev patch		46
prev patch length		72
prev phone	-19
prev piece		-24
prev piece length		-24
prev pinned		36
prev pinned length		36
prev pipe	14	46				54
prev pipe on						58
prev place	-53	7		-19
prev place on				-19
prev plaster		58
prev plaster length		58
prev plug		47
prev plug length		47
prev plumb		39
prev plumb length		39
prev plumber	34	26		32													39
prev plumber length		23
prev pressure	51								-20	31					57	27						-35
prev pressure on									-20	32					58	29						-36
prev pull		29
prev pull length		26
prev pulled		-10		-20								-32		40				29
prev pulled length		-20
prev pulled on				-20								-32		40				29
prev put		-21		-20								32			27
prev put length		-66
prev put on				-22								34			29
prev rail	45	-10		64
prev rail length		-10
prev rail on				68
prev ran		-31							-13						36
prev ran length		-32
prev ran on									-13						36
prev range		47
prev raw	43											38
prev read	-40	-82		-10					-26				27
prev read on				-10					-26				27
prev replaced				-16					40
prev replaced length		-20
prev reset		-14
prev rise		34		-29		18
prev rise length		34
prev rise on				-29		18
prev riser		29
prev riser length		35
prev rm	-50			-14					28
prev roll		41
prev roll length		41
prev roller	-67			-27
prev roof	-40	-36							30
prev roof on									32
prev room	27											34
prev room length		32
prev room on												34
prev round		-23				42
prev round length		-23
prev round on						42
prev run		30							35													-41
prev run length		27
prev run on									37													-43
prev running		-19
prev runs		32
prev salon		47
prev sand	-41
prev says	-19	-45
prev says length		-55
prev screw	45	-16		51
prev screw length		-22
prev screw on				59
prev screwed		-47		37		55
prev screwed length		-34
prev screwed on				61
prev scribed		16
prev scribed length		16
prev sealed	16																			35
prev seam		31
prev seam length		36
prev second	-39	-21		-25
prev second coat	17								17	52
prev second length		-21
prev second on				-26
prev see	-20	-46		-17								36
prev see length		-46
prev see on												39
prev sent		20
prev sent length		20
prev shed		-44
prev shelf	9	24		19
prev shelf length		24
prev shelf on				19
prev shelve		29
prev shelve length		29
prev shim		-8
prev shim length		-8
prev shimmed		34
prev shimmed length		34
prev shop	-51	-44
prev shop length		-52
prev short	-77			-18		-18
prev short on						-19
prev shower		82
prev side	34				45	30
prev side on					49	37
prev sink															17
prev sink on															25
prev sit		52
prev sits		-26
prev sits length		-26
prev sitting		31
prev sitting length		32
prev slab	41	25		36		36
prev slab length		25
prev slope		-80				-31	24
prev smoke	-50					-25
prev smoke on						-25
prev split		-30
prev split length		-30
prev squeak		-37
prev stair	33	63		27		26						22
prev stair length		63
prev stair on				30		30						24
prev start		-23
prev start length		-31
prev step		65				26
prev step length		65
prev step on						27
prev straight		-16
prev straight length		-33
prev supply									17	20
prev supply on									17	20
prev supposed		28
prev supposed length		28
prev swap		-26
prev swap length		48
prev swapped	17	49		-12					21						22					36
prev swapped length		26
prev sweep		52
prev sweep length		52
prev swing		29
prev swing length		29
prev take	34			32					-14
prev take on				32					-14
prev tap	-24
prev tape	32			55
prev tape on				22
prev taped		22		21
prev taped length		33
prev tell		25
prev tell length		28
prev temp									21
prev template		14
prev template length		14
prev test	-88
prev the wrong		-36
prev thermostat				-13					55
prev thermostat on				-14					57
prev tile	-28					21
prev tile length		-21
prev tile on						25
prev toilet		33
prev toilet length		32
prev told		26
prev took									26					38
prev took on									29					42
prev top						24
prev total	-43
prev track		48
prev track length		48
prev trim	-68	43		-13
prev trim length		43
prev truck	-14													47
prev truck on														50
prev tub		72
prev tub length		72
prev turned	13				21															27
prev turned on					22															29
prev unit	-61	34		-14		26
prev unit length		29
prev unit on						28
prev upper	25	55		41
prev upper length		28
prev upstair																		32			23
prev upstair on																		32			23
prev used	-70	-13		-38
prev used length		-15
prev used new				-49							33
prev valve	60	-45			59
prev valve on					59
prev vent	-24	47																		22
prev vinyl		61
prev wall	-23				14				-23		19
prev wall new				-12					-20		19
prev wall on					17				-21
prev want						29
prev want on						30
prev washer				21
prev water	-40	24
prev way		67																		20
prev way length		54
prev way on																				20
prev went	-38
prev wet		30										32
prev wide	19	-26		17								35
prev wide length		-26
prev window	15			59
prev wire		41
prev wrapped		-35
prev wrapped length		-21
prev x	-62			-55															40
prev x on				-59		19
prev2 air									16	26
prev2 attic																					28
prev2 b									21
prev2 base					47
prev2 basement						38									-21							21
prev2 bath									-31
prev2 bathroom				37
prev2 board				29
prev2 bottom						26				33
prev2 bracket						24
prev2 breaker													21	12
prev2 call									-15
prev2 ceiling				-11																29
prev2 closet															25
prev2 corner				31
prev2 cut				-20								23
prev2 day				-12								17
prev2 dead				-39		-26			43
prev2 deep				33
prev2 door				-24								23
prev2 drain															36
prev2 drop				-14											-38
prev2 dry				19
prev2 dryer													44
prev2 finish				36					-30	38	-29
prev2 first				-17					-21	29			36
prev2 flat				-70																55
prev2 floor						-29			-30			26
prev2 found									25									29
prev2 front				-23
prev2 gap				54
prev2 garage				-8								-25		40
prev2 garden						22
prev2 gasket									64
prev2 get				22
prev2 glass						14
prev2 going						20
prev2 gone						-36										37
prev2 hall				-28																	33
prev2 hang				24
prev2 hard				19
prev2 high				-45					14
prev2 hole				-37
prev2 hose				78
prev2 hot				-24					20
prev2 house						-24			26						22
prev2 hung				34		17
prev2 island				42											28
prev2 joist						35
prev2 kitchen																29
prev2 landing				42
prev2 last				-16		-22						37				36
prev2 leak									27
prev2 leave				-16														36
prev2 left				-20
prev2 level				-18
prev2 long						-17
prev2 loose				-28
prev2 master				-21
prev2 me				31
prev2 measured																				-21
prev2 microwave													42
prev2 middle														41
prev2 missing				-14		-11														-21
prev2 more				-19									29					31
prev2 nail				-20
prev2 need				-17					20
prev2 new																	20
prev2 number				20
prev2 oak				36								24
prev2 old				56		25
prev2 opening				31
prev2 other												-21
prev2 p									-19	34	-25		24
prev2 packed				41														35
prev2 painted						33
prev2 panel				24									34
prev2 pipe																43
prev2 plumber				41		-20				37					31
prev2 post						30
prev2 pulled				16					-19	30								23
prev2 put															26
prev2 radiator				41
prev2 rail												-27
prev2 replaced				-26		13			24				-20
prev2 return				-29					-13						30						43
prev2 rise				25		-24		43
prev2 room						-14
prev2 run												24
prev2 salon											44
prev2 sand				50
prev2 says				53
prev2 screen				45					21
prev2 screw				47		22
prev2 scribed						53
prev2 second				-18		-19	24
prev2 see				38
prev2 shop																						-30
prev2 short															40							-42
prev2 side				28
prev2 sit				-13
prev2 sits						28
prev2 sitting				13													42
prev2 slab												36			31
prev2 stair						55
prev2 step								37
prev2 stud				43
prev2 swapped				-19					22
prev2 tell													28
prev2 thing				54
prev2 tile						-34
prev2 time									-22				27			40
prev2 took				-25
prev2 top																	36
prev2 tread						41						24
prev2 trip														31
prev2 truck				18
prev2 valve				21					40						36
prev2 wait				64
prev2 wall												21
prev2 want				23															28
prev2 water				-23		28
prev2 went				-21					26			25
prev2 wet												80
prev2 window				-64
prev2 wrong											20
prev2 x				-21		20
read earlier %			40
read earlier V			19
read earlier cfm			52
read earlier in wc			-42
read earlier lb			44
read last			36
read last %			33
read last 0			69
read last 0 V			35
read last 0 ft			37
read last 0 ohm			48
read last 0 psi			17
read last 1			69
read last 1 %			42
read last 1 A			41
read last 1 F			31
read last 1 V			53
read last 1 in			31
read last 1 lb			38
read last 1 m			7
read last 1 mm			53
read last 1 ohm			42
read last 1 psi			44
read last 1 sq ft			68
read last 1. in			44
read last 1. mm			-28
read last 2			18
read last 2 %			24
read last 2 mm			-24
read last 2 psi			60
read last 2. in			44
read last 3 F			52
read last 3. V			-18
read last 3. mm			14
read last 3. psi			26
read last A			16
read last F			37
read last V			36
read last bar			30
read last bare 0			83
read last bare 0 V			32
read last bare 0 in			31
read last bare 1			83
read last bare 1 F			42
read last bare 1 mm			56
read last bare 1. in			35
read last bare 2			83
read last bare 2 in			94
read last bare 3 in			-19
read last bare 3 mm			26
read last cfm			43
read last in wc			25
read last lb			14
read last lux			119
read last mm			21
read last ohm			59
read last psi			70
read last said 0			55
read last said 0 ft			47
read last said 1			62
read last said 1 %			47
read last said 1 A			19
read last said 1 V			23
read last said 1 cfm			13
read last said 1 in			32
read last said 1 lb			38
read last said 1 m			7
read last said 1 mm			29
read last said 1 psi			21
read last said 1 sq ft			68
read last said 1. in			34
read last said 1. mm			-20
read last said 2 in			-30
read last said 2 mm			-25
read last said 2 psi			44
read last said 3. mm			19
read last said 3. psi			21
read last same noun			34
read last same noun ft			53
read last sq ft			34
read last subject area 2			-27
read last subject fixture 0			33
read last subject material 0			22
read last subject material 0 mm			-28
read last subject material 1			44
read last subject material 1 in			45
read last subject none 0			35
read last subject none 0 ft			38
read last subject none 1			91
read last subject none 1 %			24
read last subject none 1 F			25
read last subject none 1 V			42
read last subject none 1 mm			45
read last subject none 2 F			47
read last subject none 2 psi			94
read last subject own 0			77
read last subject own 1			44
read last subject own 1 mm			34
read last subject own 2 mm			46
read last subject part 1			-19
read last subject person 0			69
read last subject person 0 ft			-18
read last subject person 0 in			-11
read last subject person 0 mm			55
read last subject person 1			56
read last subject person 1 F			43
read last subject person 1 in			35
read last subject pointer 0			38
read last subject pointer 0 ft			30
read last subject pointer 1 in			-15
read last subject pointer 2 mm			-17
read last subject surface 0			35
read last subject surface 2			21
read last subject surface 2 in			45
read last subject surface 2 mm			29
read last subject tells 0			47
read last subject tells 1			70
read last subject tells 1 A			7
read last subject tells 1 in			30
read last subject tells 2			-18
read last uF			19
read last w-1 # in			-34
read last w-1 # sq ft			31
read last w-1 a in			-18
read last w-1 all			-33
read last w-1 all in			-20
read last w-1 and			40
read last w-1 are			71
read last w-1 at			24
read last w-1 at in			54
read last w-1 be			62
read last w-1 be in			58
read last w-1 by ft			45
read last w-1 by in			-23
read last w-1 for			33
read last w-1 got ft			-21
read last w-1 got in			21
read last w-1 had			-15
read last w-1 have			28
read last w-1 have in			31
read last w-1 is			42
read last w-1 is mm			58
read last w-1 it			-35
read last w-1 needs			70
read last w-1 needs in			50
read last w-1 not			-34
read last w-1 of			-20
read last w-1 of in			-19
read last w-1 on			-18
read last w-1 on in			-17
read last w-1 only			59
read last w-1 other			-13
read last w-1 other in			-11
read last w-1 out			21
read last w-1 says			46
read last w-1 says F			22
read last w-1 says in			50
read last w-1 the			-15
read last w-1 to			118
read last w-1 to F			19
read last w-1 to in			51
read last w-1 to psi			81
read last w-1 under			73
read last w-1 under %			43
read last w-1 want			68
read last w-1 wants			107
read last w-1 wants in			61
read last w-1 was			64
read of same noun			26
read of same noun ft			53
s # COP	-31
s # PREP		34
s # Vworkb		32
s # tarea	-34
s # tdefect	-30
s # tfixture	-28
s # tmaterial	-29
s # tsurface	-37
s # w		-11
s CONJ w	26	21
s CONJ w length		21
s COP CONJ		17
s COP CONJ length		17
s COP PREP		19
s DET #	-21
s DET PREP	-41	-40
s DET PREP length		-40
s DET tfixture	-19
s DET tpart	-13
s DET tsurface		24
s DET tsurface length		24
s DET w	-12	22
s DET w length		25
s M- #	-27
s NEG #	-47
s PREP # area		19
s PREP # other		33
s PREP # temperature		-13
s PREP CONJ length		15
s PREP PREP	18
s PREP Vworks	-17
s PREP tmaterial	-22
s PREP tpart	-14
s PREP tsurfaceVworkb	-18
s PREP w		-13
s PREP w length		-18
s PRON #	-29
s PRON # length		54
s PRON PREP		37
s PRON PREP length		45
s PRON tdefect		32
s PRON tdefect length		32
s Q0 #	-36
s Vhaveb #	13
s Vhavepp #	-33
s Vmeasurei #	45
s Vmeasures #		21
s Vneedb #	-18
s Vneeds PREP		21
s Vneeds w	19
s Votherb #	21
s Votherb # length		25
s Votherb PREP	33
s Votherb w		-10
s Votherb w length		-10
s Votherp PREP	39
s Votherp w	-36
s Vsayb #		21
s Vsays #		21
s Vsays PREP	-13
s Vworkb #	-42	23
s Vworkb # length		19
s Vworkb PREP	35	69
s Vworkb PREP length		69
s Vworkb w	-58
s Vworkbpp #	12	27
s Vworkbpp # length		27
s Vworkbpp PREP length		-10
s Vworkbpp w		16
s Vworkbpp w length		16
s Vworki #		55
s Vworkpp #	-35
s Vworkpp PREP	-28
s Vworkpp w		38
s Vworkpp w length		38
s tarea #		46
s tarea # length		47
s tdefect #		45
s tdefect # length		41
s tdefect PREP		30
s tdefect PREP length		30
s tdefectVotheri PREP		56
s tfixture #		33
s tfixture # length		33
s tfixture w		15
s tfixture w length		15
s tmaterial #	-62	-28
s tmaterial # length		-27
s tmaterial PREP length		57
s tmaterial w		88
s tmaterial w length		72
s tpart # length		-28
s tpart w		33
s tpart w length		33
s tpartVworkb PREP length		-8
s tpartVworks PREP		41
s tsurface #	20
s tsurface PREP	21	45
s tsurface PREP length		46
s tsurface w		-18
s tsurface w length		-33
s tsurface's #	37
s tsurfaceVworkb #		31
s tsurfaceVworkb # length		31
s tsurfaceVworki #		33
s w #	-29
s w # length		35
s w # temperature		-25
s w CONJ		-29
s w CONJ length		-29
s w PREP length		28
s w tdefect	-21
s w tpart	-22
s w w		21
s w's PREP		44
s w's PREP length		44
s wly #	9	32
s wly # length		32
s wly PREP		-11
s wly PREP length		-11
s wly w		34
s wly w length		34
s+1 # <0.1 length		35
s+1 # <0.6	-30
s+1 # <1		-17
s+1 # <1 length		-25
s+1 # <100	-51	71
s+1 # <100 length		74
s+1 # <1000		61
s+1 # <115	-36
s+1 # <130	-46
s+1 # <160	22	47
s+1 # <2	-56
s+1 # <20	12	14
s+1 # <200		51
s+1 # <26	-43
s+1 # <26 percent		47
s+1 # <260	29	35
s+1 # <3	-28	-15
s+1 # <3 length		-15
s+1 # <3000	-31
s+1 # <32	18
s+1 # <32 length		39
s+1 # <40		38
s+1 # <40 length		31
s+1 # <400		39
s+1 # <50	-27	17
s+1 # <600	14
s+1 # <72	9	63
s+1 # <72 length		30
s+1 # <8	-35
s+1 # <85	8	-13
s+1 # decimal		33
s+1 # decimal length		15
s+1 # volume		-18
s+1 CONJ <0.6		-43
s+1 CONJ <0.6 length		-51
s+1 CONJ <12		-35
s+1 CONJ <12 length		-35
s+1 CONJ <16		28
s+1 CONJ <2		-20
s+1 CONJ <2 length		-20
s+1 CONJ <40		36
s+1 CONJ <40 length		36
s+1 CONJ <50		63
s+1 CONJ fine		37
s+1 CONJ fine length		37
s+1 COP	-27
s+1 COP <3	-23
s+1 COP whole	-27
s+1 DET	-25
s+1 DET <0.6		41
s+1 DET <0.6 length		43
s+1 DET <8		-14
s+1 DET <8 length		36
s+1 DET fine		13
s+1 DET fine length		13
s+1 DET whole	-42
s+1 M-	-28
s+1 M- whole	-28
s+1 MOD	-22
s+1 MOD whole	-22
s+1 NEG length		-68
s+1 NEG whole		71
s+1 PREP <0.1 length		-18
s+1 PREP <100		-14
s+1 PREP <100 length		-28
s+1 PREP <1000	32
s+1 PREP <115		47
s+1 PREP <12		24
s+1 PREP <16	-25	51
s+1 PREP <16 length		32
s+1 PREP <160		30
s+1 PREP <160 length		31
s+1 PREP <2	-50
s+1 PREP <2 length		41
s+1 PREP <20		51
s+1 PREP <26	25
s+1 PREP <26 length		23
s+1 PREP <260		-52
s+1 PREP <3	-35
s+1 PREP <32	38
s+1 PREP <40	47	41
s+1 PREP <40 length		41
s+1 PREP <5	-26	36
s+1 PREP <5 length		41
s+1 PREP <50	55
s+1 PREP <60		30
s+1 PREP <60 length		26
s+1 PREP <600	27
s+1 PREP <72	42
s+1 PREP <72 length		-10
s+1 PREP <8	-45	36
s+1 PREP <8 length		39
s+1 PREP <85		-50
s+1 PREP area		22
s+1 PREP decimal		22
s+1 PREP decimal voltage		21
s+1 PREP quarter		47
s+1 PREP quarter length		52
s+1 PREP temperature		30
s+1 PREP weight		21
s+1 PREP whole area		19
s+1 PREP whole temperature		30
s+1 PREP whole voltage		-44
s+1 PREP whole weight		21
s+1 PRON		55
s+1 PRON whole		54
s+1 Q0	-33
s+1 Q0 whole	-33
s+1 Qlength	45
s+1 Qlength whole	45
s+1 Qpack		12
s+1 SUB		31
s+1 SUB length		16
s+1 SUB whole	-18
s+1 SUB whole length		-22
s+1 Ton		-39
s+1 Vmovepp whole		52
s+1 Votherp		-26
s+1 Votherp length		-26
s+1 Vworkb	-44
s+1 Vworkb <5		40
s+1 Vworkb <5 length		40
s+1 Vworkb <8		-39
s+1 Vworkb whole	-44	-28
s+1 Vworks	-39
s+1 Vworks <5	-24
s+1 Vworks whole	-39
s+1 tdefect	-34	39
s+1 tdefect <0.6		39
s+1 tdefect <0.6 length		39
s+1 tdefect <2	-48
s+1 tdefect <3		29
s+1 tdefect <3 length		19
s+1 tdefect <5		28
s+1 tdefect <5 length		23
s+1 tdefect fine		29
s+1 tdefect fine length		29
s+1 tdefect length		37
s+1 tdefect quarter		33
s+1 tdefect quarter length		33
s+1 tdefect whole	-48	46
s+1 tdefect whole length		44
s+1 tdefectVotherp	-18
s+1 tdefectVotherp whole	-18
s+1 tdefectVotherpp	-27
s+1 tdefectVotherpp whole	-27
s+1 tdefectVworkpp	-29
s+1 tdefectVworkpp whole	-29
s+1 tfinish	-57	-26
s+1 tfinish length		-37
s+1 tfinish whole	-57	-35
s+1 tfinish whole length		-54
s+1 tfixture	-26
s+1 tfixture whole	-28
s+1 tmaterial	-32	-42
s+1 tmaterial <12	-16
s+1 tmaterial <16	-50
s+1 tmaterial <2	-25
s+1 tmaterial <5	-17
s+1 tmaterial <8	-19
s+1 tmaterial length		-42
s+1 tmaterial whole	-32
s+1 tmaterialVworkb	-27
s+1 tmaterialVworkb whole	-27
s+1 tmaterialVworks	-23
s+1 tmaterialVworks <3	-17
s+1 tmaterialVworks whole	-23
s+1 tpart	-26	-51
s+1 tpart <2	-17
s+1 tpart <26	-21
s+1 tpart <3	-22
s+1 tpart <5	-16
s+1 tpart <8	-17
s+1 tpart whole	-26
s+1 tpartVworkb	-38
s+1 tpartVworkb whole	-38
s+1 tpartVworks	-31
s+1 tpartVworks whole	-31
s+1 tsurface	-24	24
s+1 tsurface <0.6		47
s+1 tsurface <0.6 length		47
s+1 tsurface <2	-26
s+1 tsurface <3	-21
s+1 tsurface <5	-23	-21
s+1 tsurface <5 length		-21
s+1 tsurface <8	-35
s+1 tsurface fine		35
s+1 tsurface fine length		35
s+1 tsurface length		27
s+1 tsurface whole	-24
s+1 tsurfaceVotherb		28
s+1 tsurfaceVotherb <0.6		25
s+1 tsurfaceVotherb <0.6 length		25
s+1 tsurfaceVotherb length		28
s+1 tsurfaceVworkb	-24
s+1 tsurfaceVworkb <2	-24
s+1 tsurfaceVworkb whole	-24
s+1 tsurfaceVworks	-18
s+1 tsurfaceVworks <5	-17
s+1 tsurfaceVworks whole	-18
s+1 ttool		-22
s+1 ttool whole		-22
s+1 w <0.1		48
s+1 w <0.1 length		48
s+1 w <0.6		28
s+1 w <0.6 length		29
s+1 w <12	-26	24
s+1 w <12 length		23
s+1 w <130	17
s+1 w <16	-27	42
s+1 w <2	-37
s+1 w <2 length		-9
s+1 w <20	57
s+1 w <26		33
s+1 w <26 length		27
s+1 w <260		31
s+1 w <3	-45	45
s+1 w <3 length		47
s+1 w <32	29	63
s+1 w <32 length		40
s+1 w <40	-42	-14
s+1 w <40 length		-15
s+1 w <400	32
s+1 w <5	-65	-24
s+1 w <5 length		-8
s+1 w <50	40	-24
s+1 w <50 length		22
s+1 w <60		19
s+1 w <600	14
s+1 w <72	12
s+1 w <72 length		-16
s+1 w <85		83
s+1 w <85 length		64
s+1 w area		-13
s+1 w voltage		11
s+1 w whole pressure		-14
s+1 w whole voltage		11
s+2 # # volume		-18
s+2 CONJ #		-30
s+2 CONJ # length		-30
s+2 CONJ Q0	-50	-23
s+2 CONJ Q0 length		16
s+2 CONJ SUB		37
s+2 CONJ SUB length		20
s+2 DET #		66
s+2 DET # length		66
s+2 DET w	-32	27
s+2 DET w length		58
s+2 M- Q0	-28
s+2 PREP #	-6
s+2 PREP # length		37
s+2 PREP DET		31
s+2 PREP DET percent		19
s+2 PREP OPR	-44
s+2 PREP PREP		59
s+2 PREP PREP length		59
s+2 PREP PRON	26
s+2 PREP PRON length		-16
s+2 PREP Q0		24
s+2 PREP Q0 length		39
s+2 PREP Qlength		-12
s+2 PREP Qlength length		-9
s+2 PREP Qtime		26
s+2 PREP SUB		27
s+2 PREP SUB length		34
s+2 PREP Vmoveb	-55
s+2 PREP Vworkb		28
s+2 PREP Vworkb length		24
s+2 PREP tmaterial		44
s+2 PREP tmaterial length		57
s+2 PREP tmaterialVworkb		65
s+2 PREP tmaterialVworkb length		65
s+2 PREP w	-33
s+2 PREP w voltage		15
s+2 Q0 #	-29
s+2 SUB DET	-25	66
s+2 SUB PRON	17
s+2 Vmovepp PREP		-13
s+2 Vworkb #		-66
s+2 Vworkb # length		-52
s+2 Vworkb PREP		33
s+2 Vworkb PREP length		43
s+2 Vworkb SUB		26
s+2 Vworkb SUB length		26
s+2 Vworkpp #		-11
s+2 Vworkpp # length		21
s+2 Vworks #	-37
s+2 tarea #	-33
s+2 tdefect #		50
s+2 tdefect # length		48
s+2 tdefect PREP	-37	-12
s+2 tdefect PREP length		-12
s+2 tfinish #	-59	-44
s+2 tfinish # length		-62
s+2 tfixture #	-26
s+2 tmaterial #	-39
s+2 tmaterial PREP	-29
s+2 tmaterial w	-20
s+2 tmaterialVworkb #	-33
s+2 tmaterialVworks PREP	-16
s+2 tpart #	-26
s+2 tpart PREP	-18
s+2 tsurface #	-28
s+2 tsurface PREP	-18	36
s+2 tsurface PREP length		44
s+2 tsurface w	-20
s+2 tsurfaceVworks #	-15
s+2 w # length		36
s+2 w # pressure		-16
s+2 w CONJ		31
s+2 w CONJ length		32
s+2 w DET	28	-18
s+2 w DET length		-18
s+2 w PREP	-38	40
s+2 w PREP length		40
s+2 w Q0		-26
s+2 w SUB		47
s+2 w SUB length		47
s+2 w Vworkpp	-24
s+2 w w	-39
s-1 # current		-21
s-1 # percent		27
s-1 # weight		-34
s-1 CONJ	-25
s-1 DET	-26	-20
s-1 HAVE	-31
s-1 M(		-62
s-1 M( length		-52
s-1 M+	-23
s-1 M-	-31
s-1 NEG	-49	-59
s-1 NEG length		-40
s-1 OPR	-46
s-1 PREP angle		-41
s-1 PREP percent		50
s-1 PREP pressure		40
s-1 PREP weight		48
s-1 PRON	-10
s-1 Q0	-18	-24
s-1 Q0 length		-24
s-1 Qlength	-19
s-1 Qpack	-18
s-1 SUB	-43	-14
s-1 SUB length		-20
s-1 Ton	-25
s-1 Ton length		43
s-1 Vhaveb	-18
s-1 Vhavepp	-28
s-1 Vmeasureb		42
s-1 Vmeasureb length		33
s-1 Vmeasurebpp	38	45
s-1 Vmeasurei	53
s-1 Vmeasurei length		26
s-1 Vmeasurei percent		27
s-1 Vmeasurepp		22
s-1 Vmeasures	49	29
s-1 Vneedb	-24	-22
s-1 Vneedpp	-23
s-1 Votherb	20
s-1 Vothers		49
s-1 Vsayb	-23	28
s-1 Vsaypp	27
s-1 Vsays		25
s-1 Vsays length		18
s-1 Vworkb	-20	-20
s-1 Vworkb length		-23
s-1 Vworkbp		25
s-1 Vworkbp length		25
s-1 Vworkbpp		-17
s-1 Vworkbpp length		-20
s-1 Vworki	49	55
s-1 Vworkpp	-29
s-1 tarea	-41
s-1 tdefect	-19	40
s-1 tdefect length		41
s-1 tdefectVotherb		60
s-1 tdefectVotherb length		56
s-1 tdefectVotheri		56
s-1 tdefectVotherpp		58
s-1 tdefectVotherpp length		58
s-1 tdefectVothers		37
s-1 tdefectVothers length		37
s-1 tdefectVworkpp		52
s-1 tdefectVworkpp length		52
s-1 tfinish	-24	-89
s-1 tfixture		32
s-1 tfixture length		40
s-1 tmaterial	-43	-28
s-1 tmaterial length		-20
s-1 tmaterial's	36	-15
s-1 tmaterial's length		-15
s-1 tmaterialVworkb	-69
s-1 tpart	-66	-14
s-1 tpart length		-36
s-1 tpart's		50
s-1 tpart's length		50
s-1 tpartVworkb	16
s-1 tpartVworks		79
s-1 tsurface's	52	23
s-1 tsurface's length		21
s-1 tsurfaceVotherb		32
s-1 tsurfaceVotherb length		32
s-1 tsurfaceVworkb	25	46
s-1 tsurfaceVworkb length		43
s-1 tsurfaceVworki		62
s-1 tsurfaceVworki length		22
s-1 w	-27
s-1 w area		31
s-1 w pressure		42
s-1 w temperature		-18
s-1 w voltage		-48
s-1 w's	38
s-1 wly	16
s-2 # # current		-21
s-2 # # percent		27
s-2 # # weight		-34
s-2 # DET	-21	-53
s-2 # DET length		-41
s-2 # PREP		43
s-2 # PRON	-8
s-2 # Vneedb	-19
s-2 # Vneeds	34	62
s-2 # Vneeds length		40
s-2 # Votherb		-29
s-2 # Votherb length		-35
s-2 # Votherp		35
s-2 # Vworkb		43
s-2 # Vworkb length		43
s-2 # Vworkbpp		-6
s-2 # Vworkbpp length		-23
s-2 # tfixture	32
s-2 # tfixture length		19
s-2 # tmaterial	-67	-33
s-2 # tpart	-28	-13
s-2 # tpart length		-22
s-2 # tsurface	7
s-2 # tsurface's		69
s-2 # w	11
s-2 # w length		71
s-2 CONJ DET	-34
s-2 COP PREP	43
s-2 COP PREP length		43
s-2 COP Vworkpp		56
s-2 COP Vworkpp length		52
s-2 COP tdefect		20
s-2 COP tdefect length		20
s-2 COP w		27
s-2 COP w length		26
s-2 COP wly		24
s-2 COP wly length		24
s-2 DET tarea length		-16
s-2 DET tfixture		22
s-2 DET tfixture length		22
s-2 DET tmaterial	29	66
s-2 DET tmaterial length		66
s-2 DET tpart		60
s-2 DET tpart length		52
s-2 DET tsurface		29
s-2 DET tsurface length		29
s-2 DET w	-29
s-2 DET w's	-36	-37
s-2 DET w's length		-37
s-2 PREP DET	-28	-41
s-2 PREP DET length		-44
s-2 PREP Votherb	-29
s-2 PREP Vworkb	-39	23
s-2 PREP Vworkb length		23
s-2 PREP tmaterial		-59
s-2 PREP tmaterial length		-47
s-2 PREP tsurface		-8
s-2 PREP tsurface length		-8
s-2 PREP w	-40	-43
s-2 PREP w length		-29
s-2 PRON COP	-36
s-2 PRON DET	-23	-28
s-2 PRON DET length		-20
s-2 PRON PREP	-24
s-2 PRON PREP length		51
s-2 PRON Vhavepp	-29
s-2 PRON Vmeasurei		30
s-2 PRON Vneedb		-25
s-2 PRON Vneedb length		-8
s-2 PRON Votherb		42
s-2 PRON Votherb length		42
s-2 PRON Votherp	-16	-19
s-2 PRON Votherp length		-38
s-2 PRON Vworkpp	-37	-105
s-2 PRON w		70
s-2 PRON w length		70
s-2 Q0 CONJ	-58
s-2 Q0 M-	-26
s-2 Q0 PREP	-39	-24
s-2 Q0 PREP length		-24
s-2 Q0 w	-23
s-2 Qlength PREP		-39
s-2 Qlength PREP length		-43
s-2 Qlength w		37
s-2 Qlength w length		37
s-2 Ton PREP	-61
s-2 Vmeasurei PREP		27
s-2 Vmeasurep PREP		30
s-2 Vmeasurep PREP length		25
s-2 Votherb PREP	25	36
s-2 Votherb PREP length		26
s-2 Votherp DET		42
s-2 Votherp DET length		42
s-2 Votherp PREP		-15
s-2 Votherp PREP length		-15
s-2 Vworkb COP		49
s-2 Vworkb PREP	-43
s-2 Vworkb PRON	-35
s-2 Vworkbpp PREP	98	65
s-2 Vworkbpp PREP length		65
s-2 Vworki PREP		76
s-2 Vworkpp DET	-20	34
s-2 Vworkpp DET length		34
s-2 Vworkpp PREP	-30
s-2 Vworkpp PRON		25
s-2 Vworkpp PRON length		22
s-2 Vworks PREP	-38	-40
s-2 tarea PREP		-54
s-2 tarea PREP length		-51
s-2 tdefect PREP	-50	48
s-2 tdefect PREP length		47
s-2 tdefect w		47
s-2 tdefect w length		47
s-2 tdefectVotherb PREP		29
s-2 tdefectVotherb PREP length		29
s-2 tdefectVothers PREP		29
s-2 tdefectVworkpp PREP	-44	32
s-2 tdefectVworkpp PREP length		33
s-2 tdefectVworks PREP		33
s-2 tdefectVworks PREP length		33
s-2 tfinish PREP		52
s-2 tfinish PREP length		56
s-2 tfixture COP	-31
s-2 tfixture PREP	-42	24
s-2 tfixture PREP length		24
s-2 tfixture Votherp		-30
s-2 tmaterial COP length		42
s-2 tmaterial PREP	-34	16
s-2 tmaterial Vmeasures		23
s-2 tmaterial w		27
s-2 tmaterial w length		27
s-2 tmaterial's PREP		32
s-2 tpart PREP	28
s-2 tpart w	-41
s-2 trole Vneeds	30
s-2 tsurface COP		42
s-2 tsurface COP length		40
s-2 tsurface PREP		66
s-2 tsurface PREP length		67
s-2 tsurface w		44
s-2 tsurfaceVotherb PREP		22
s-2 tsurfaceVotherb PREP length		22
s-2 w CONJ	18	-27
s-2 w CONJ length		-27
s-2 w COP		40
s-2 w COP length		30
s-2 w DET	-41
s-2 w Vmeasures		56
s-2 w Vneeds	59
s-2 w Votherp		26
s-2 w Vsays	-21
s-2 w tmaterial		31
s-2 w tmaterial length		31
s-2 w tsurface length		-16
s-2 w w	-62	31
said last			25
said last %			33
said last V			19
said last cfm			23
said last cm			63
said last deg			-21
said last gal			-17
said last ohm			57
said last psi			43
said last sq ft			35
said last sq m			56
said next F			-49
said next mm			21
said next sq ft			64
says copula ahead	-20	-43
says copula ahead length		-27
says copula ahead whole	-20
says copula ahead whole length		24
says copula area whole		27
says copula behind angle		26
says copula behind decimal	42	31
says copula behind decimal length		29
says copula behind percent		35
says copula behind pressure		-18
says copula behind temperature		24
says copula behind whole angle		27
says copula behind whole percent		35
says copula behind whole temperature		24
says copula behind whole volume		15
says copula fixture fine		-20
says copula fixture fine length		-20
says copula fixture half		42
says copula fixture half length		42
says copula material quarter		-15
says copula material quarter length		-15
says copula material whole		31
says copula material whole length		24
says copula own fine		25
says copula own fine length		25
says copula own half		45
says copula own half length		45
says copula own whole length		30
says copula part fine		40
says copula part fine length		40
says copula part quarter		33
says copula part quarter length		33
says copula part whole	-20
says copula part whole length		18
says copula person fine		50
says copula person fine length		50
says copula person quarter		51
says copula person quarter length		51
says copula person whole	-70
says copula pointer decimal	68
says copula pointer whole	-14
says imperative behind	-13
says imperative behind whole	-17	-15
says imperative none whole	-16	-15
says modal ahead	-49	-23
says modal ahead whole	-49	-30
says modal behind	-22
says modal behind fine		27
says modal behind fine length		27
says modal behind length		14
says modal behind quarter		-17
says modal behind quarter length		-17
says modal behind whole	-16
says modal behind whole length		21
says modal none whole	-13
says modal person quarter		-18
says modal person quarter length		-18
says modal person whole	-16	-26
says none behind area		17
says none behind decimal	19
says none behind decimal current		34
says none behind decimal length		-11
says none behind decimal voltage		26
says none behind flow		27
says none behind other		33
says none behind temperature		23
says none behind whole area		14
says none behind whole temperature		23
says none behind whole weight		-28
says none none decimal	19
says none none decimal current		34
says none none decimal length		-11
says none none decimal voltage		26
says none none whole area		14
says none none whole temperature		23
says none none whole weight		-28
says owed ahead	-15
says owed ahead whole	-15
says owed behind	-7
says owed behind quarter		21
says owed behind quarter length		21
says owed behind whole	-11
says owed fixture fine		27
says owed fixture fine length		27
says owed material whole		44
says owed none whole	-23
says owed own whole	19
says owed person half		-25
says owed person half length		-30
says owed person whole		8
says owed person whole length		19
says owed pointer whole	-36	-11
says owed pointer whole length		-11
says past ahead	-18	-45
says past ahead length		-46
says past ahead whole	-18	-34
says past ahead whole length		-31
says past area whole		32
says past behind	-17
says past behind fine		30
says past behind fine length		31
says past behind other		27
says past behind percent		28
says past behind pressure		44
says past behind volume		-28
says past behind whole	-17
says past behind whole area		24
says past behind whole other		26
says past behind whole percent		28
says past behind whole pressure		44
says past behind whole volume		-12
says past material half		38
says past material half length		38
says past material whole	-37	-20
says past material whole length		-22
says past none fine		29
says past none fine length		29
says past none half length		30
says past none quarter		-47
says past none quarter length		-49
says past none whole	-15
says past own whole	-36
says past own whole length		28
says past part whole	-51	41
says past part whole length		56
says past person half		-19
says past person whole	-9
says past person whole area		24
says past person whole length		-39
says past person whole percent		20
says past pointer whole	14	41
says past pointer whole length		35
says past surface fine		40
says past surface fine length		40
says past surface whole		31
says past surface whole length		29
says past tells whole	-36
says present ahead	-25	-36
says present ahead length		-36
says present ahead whole	-25	-40
says present ahead whole length		-40
says present behind area		-23
says present behind decimal	-30	37
says present behind fine		48
says present behind fine length		49
says present behind half length		-11
says present behind other		-29
says present behind percent		35
says present behind quarter		31
says present behind quarter length		31
says present behind volume		-22
says present behind weight		21
says present behind whole area		-27
says present behind whole other		-44
says present behind whole percent		32
says present behind whole weight		21
says present material fine		26
says present material fine length		26
says present material whole		68
says present material whole length		63
says present own whole	-23	-7
says present own whole length		-28
says present part whole		47
says present part whole length		34
says present person whole	-28	-10
says present pointer half		-17
says present pointer half length		-17
says present pointer whole	-34
says present pointer whole length		-16
says present surface whole	-32	-29
says present surface whole length		-47
says present tool whole		-31
size <0.1	-55								-16						-27		41
size <0.1 fine		30
size <0.1 fine length		30
size <0.1 length		30
size <0.1 one									-16						-27		41
size <0.1 whole	-60														-27		43
size <0.6	-62			35					-19
size <0.6 decimal	-62			35					-19
size <0.6 one				35					-19
size <0.6 quarter		-8
size <0.6 quarter length		-13
size <0.6 quarter slope		21
size <0.6 slope		28
size <1				-11														88
size <1 decimal				-11														88
size <1 one				-11														88
size <1 quarter		-19
size <1 quarter length		-15
size <100									34		26									17
size <100 one				-12		37			38		28									18
size <100 whole		32							40											17
size <100 whole length		-11
size <1000						69
size <1000 length		-29
size <1000 one						43
size <1000 pair2				-27		56
size <1000 whole						69
size <1000 whole length		-29
size <115									39						24
size <115 one									40						24
size <115 whole									39						24
size <12	-22
size <12 area		-20
size <12 decimal	48	62						-18				29	26	62				-37			-21
size <12 half		-39
size <12 half length		-41
size <12 pair2				43					-27
size <12 percent		37
size <12 quarter		43
size <12 quarter length		43
size <12 weight		35
size <12 whole	-28
size <12 whole area		-24
size <130		54							44				49
size <130 length		-23
size <130 one				-14					51				56
size <130 voltage		76
size <130 whole		46							49				32
size <130 whole length		-36
size <16				28
size <16 area		-26
size <16 decimal	41	23																	93
size <16 half		-30
size <16 half length		-30
size <16 one				31
size <16 pair1				-25
size <16 whole	-31			30
size <16 whole area		-26
size <160		21				23			60
size <160 one						33			63
size <160 whole		20				23			60
size <2	-36
size <2 area		-31
size <2 half		-33
size <2 half length		-35
size <2 volume		-24
size <2 whole	-38
size <20	11			43								15
size <20 one				32								21
size <20 pair2				54
size <20 whole	9			46								16
size <200	17	62				68
size <200 one						68
size <200 whole	17	41				68
size <26	-41			32
size <26 fine		-10
size <26 fine length		-10
size <26 half		53
size <26 half length		53
size <26 one				55									18
size <26 percent		43
size <26 whole		-14		35
size <26 whole percent		43
size <260	19			-16		36							58							19
size <260 length		25
size <260 one				-16		36							58							19
size <260 whole	18			-17		37							49							20
size <260 whole length		25
size <3	-36
size <3 decimal	-16					-51		87					-22	-21				-19
size <3 half		-32
size <3 half length		-32
size <3 quarter		39
size <3 quarter length		39
size <3 whole	-37
size <3 whole length		21
size <3000		46				75
size <3000 one						49
size <3000 pair2						73
size <3000 whole		46				75
size <32				36																	24
size <32 fine		43
size <32 fine length		43
size <32 half		27
size <32 half length		27
size <32 length		35
size <32 one																					32
size <32 pair2				43
size <32 percent		28
size <32 whole				42
size <32 whole percent		28
size <40				39
size <40 fine		35
size <40 fine length		35
size <40 half		66
size <40 half length		65
size <40 one				35
size <40 pair2				40
size <40 quarter		62
size <40 quarter length		62
size <40 whole				39
size <40 whole length		-19
size <400	10	33				39											29
size <400 length		-20
size <400 one						51											32
size <400 other		22
size <400 whole	10	33				39											29
size <400 whole length		-20
size <400 whole other		22
size <5	-29
size <5 current		-29
size <5 decimal	37												-42		-45			15	-20			31
size <5 fine		-18
size <5 fine length		-18
size <5 half		-36
size <5 half length		-36
size <5 pair1					31
size <5 temperature		-66
size <5 whole	-31
size <5 whole temperature		-66
size <50		23		38
size <50 fine		54
size <50 fine length		54
size <50 length		22
size <50 pair2					48
size <60	28	28		43					50
size <60 half		27
size <60 half length		27
size <60 length		31
size <60 one				34					57
size <60 pressure		24
size <60 quarter		32
size <60 quarter length		32
size <60 whole	28			43					50
size <60 whole pressure		24
size <600	18	31		-16		52																25
size <600 one				-10		26																34
size <600 pair2				-23		71
size <600 whole	18	31		-16		52																25
size <72	21	37		31					32											15
size <72 length		24
size <72 one									42			22								21
size <72 pair2				30
size <72 weight		43
size <72 whole	20			31					30											16
size <72 whole weight		43
size <8	-35
size <8 current		18
size <8 decimal	22	38												31	34			18			25
size <8 half		16
size <8 half length		12
size <8 pressure		52
size <8 whole	-38
size <85				28					18
size <85 half		35
size <85 half length		35
size <85 length		43
size <85 one							22		24			22
size <85 pair2				39
size <85 whole				28					18
size <85 whole length		26
size huge						49
size huge one						49
size huge whole						49
subject area		39
subject area be behind	34	34
subject area be behind length		21
subject area length		28
subject area null behind	-36	31
subject area null behind length		30
subject fixture #	-23
subject fixture at	37	-24
subject fixture at length		-31
subject fixture be ahead	-28
subject fixture have behind		21
subject fixture have behind length		21
subject fixture null behind	12	-12
subject fixture was		-30
subject material	-21
subject material about		27
subject material about length		27
subject material are		53
subject material are length		53
subject material area		44
subject material at		30
subject material at length		29
subject material be ahead	-27
subject material by		16
subject material by length		16
subject material have behind	-16	26
subject material have behind length		26
subject material is length		37
subject material of	-43
subject material the	-21
subject none # angle		-15
subject none # area		14
subject none # flow		33
subject none # other		37
subject none # power		50
subject none # weight		-15
subject none (		-36
subject none +	-23
subject none -	-27
subject none <q>	-71	-71
subject none @ length		-15
subject none a length		49
subject none all	-20
subject none and		47
subject none and length		39
subject none angle		-28
subject none area		19
subject none at		37
subject none buy behind		-27
subject none by	-48	-20
subject none by length		-20
subject none come behind		37
subject none cut	-17	20
subject none cut behind	37
subject none cut length		20
subject none get behind		-20
subject none get behind length		-9
subject none grab behind	-16
subject none hang behind		43
subject none hang behind length		43
subject none have behind		57
subject none have behind length		57
subject none hole		35
subject none hole length		35
subject none in		-47
subject none in length		-38
subject none is length		8
subject none leave behind		-21
subject none leave behind length		-21
subject none like		21
subject none like length		21
subject none maybe		35
subject none maybe length		31
subject none measure behind		25
subject none need behind	-14	-27
subject none need behind length		-43
subject none of	-28	-26
subject none of length		-36
subject none on	-26
subject none order behind	-29
subject none other		37
subject none out		31
subject none out length		31
subject none over		56
subject none over length		56
subject none prime behind	-31
subject none run		24
subject none run length		24
subject none sand behind	-26
subject none say		35
subject none slope		27
subject none take behind		27
subject none take behind length		27
subject none the		-31
subject none the length		-26
subject none to	13
subject none to length		22
subject none up length		26
subject none use behind		-30
subject none use behind length		-26
subject none volume		-22
subject none want behind	-25	27
subject none want behind length		27
subject none wants		27
subject none wants length		27
subject none with	-23
subject none within		29
subject none within length		29
subject own	-26
subject own #		-68
subject own # length		-73
subject own and	-27
subject own at		78
subject own at length		66
subject own be ahead		18
subject own be behind	-15	35
subject own be behind length		41
subject own had	-14
subject own is	-19	42
subject own is length		25
subject own length		35
subject own to		16
subject part	-24
subject part at	43	67
subject part at length		64
subject part be ahead	-13
subject part be behind		37
subject part null behind	-38
subject part was		24
subject part was length		24
subject person	-18
subject person <q>	26
subject person a	26	-72
subject person a length		-56
subject person about		28
subject person about length		22
subject person all	-20
subject person area		-33
subject person at length		-24
subject person be behind	-47	-28
subject person be behind length		-34
subject person by	-41	31
subject person by length		31
subject person count behind	-38
subject person cut		17
subject person cut length		17
subject person do behind	-13
subject person finish behind	-17
subject person go behind	-23
subject person got	-17	45
subject person had	-29
subject person have behind	31	-60
subject person have behind length		-38
subject person in	-17	8
subject person in length		25
subject person is	42
subject person it	-12
subject person make behind	-27	-28
subject person make behind length		-28
subject person measure behind	64	32
subject person measure behind length		19
subject person move behind		19
subject person move behind length		19
subject person need behind	-36	-44
subject person need behind length		-44
subject person null behind	-60
subject person pick behind	-47
subject person run behind		-34
subject person sand behind	-16
subject person set behind		-29
subject person set behind length		-29
subject person take behind	-31
subject person take behind length		17
subject person the	-24	-28
subject person the length		-28
subject person think behind		16
subject person to	51	80
subject person to length		81
subject person up		27
subject person up length		27
subject person volume		-27
subject person want behind	28	16
subject person want behind length		46
subject person wants	27
subject person with		-12
subject pointer #	-26
subject pointer all	-17
subject pointer and		25
subject pointer and length		25
subject pointer are		49
subject pointer are length		49
subject pointer at	29
subject pointer at length		-24
subject pointer be behind	-10
subject pointer by		22
subject pointer by length		22
subject pointer good		25
subject pointer good length		25
subject pointer have behind	-19
subject pointer in		68
subject pointer in length		68
subject pointer is	-41	46
subject pointer like		24
subject pointer like length		26
subject pointer over		43
subject pointer over length		43
subject pointer say behind	35
subject pointer says	-11
subject pointer that's	-19
subject pointer the	-17
subject pointer there's	-25
subject pointer to		30
subject pointer to length		30
subject pointer want behind		57
subject pointer want behind length		57
subject surface #	-34
subject surface about		-30
subject surface about length		-30
subject surface and		-13
subject surface and length		-13
subject surface at	61	-20
subject surface at length		-29
subject surface be ahead	37
subject surface go behind		24
subject surface go behind length		24
subject surface is	77
subject surface null behind	22
subject surface to		39
subject surface to length		39
subject tells		-7
subject tells #	23
subject tells be behind		34
subject tells be behind length		31
subject tells length		-13
subject tells say behind	-40
subject tells say behind length		-17
subject tells says	-37
subject tool		-11
sw # at		22
sw # deep	21	48
sw # deep length		48
sw # long		50
sw # long length		50
sw # more	-46
sw # of	-29	-8
sw # on		-13
sw # on length		-16
sw # up		27
sw # up length		27
sw COP and		17
sw COP and length		17
sw COP low		36
sw COP low length		30
sw COP short		46
sw COP short length		46
sw DET #	-21
sw DET hole		28
sw DET hole length		28
sw M- #	-27
sw NEG #	-47
sw PREP # area		19
sw PREP # other		33
sw PREP # temperature		-13
sw PREP by		36
sw PREP by length		42
sw PREP centres		-29
sw PREP centres length		-29
sw PREP deep		-61
sw PREP deep length		-61
sw PREP for		32
sw PREP in		27
sw PREP in length		28
sw PREP long		27
sw PREP long length		27
sw PREP of	-22	50
sw PREP of length		53
sw PREP off	42
sw PREP on		28
sw PREP on length		29
sw PREP short		-27
sw PREP short length		-33
sw PREP side	-18
sw PREP the		53
sw PREP to	58	65
sw PREP to length		65
sw PREP wide		38
sw PREP wide length		38
sw PREP with		-23
sw PREP with length		-40
sw PRON #	-29
sw PRON # length		54
sw PRON long		41
sw PRON long length		41
sw Q0 #	-36
sw Vhaveb #	13
sw Vhavepp #	-33
sw Vmeasurei #	45
sw Vmeasures #		21
sw Vneedb #	-18
sw Votherb #	21
sw Votherb # length		25
sw Votherb off		25
sw Votherb off length		32
sw Vsayb #		21
sw Vsays #		21
sw Vsays to	-39
sw Vworkb #	-42	23
sw Vworkb # length		19
sw Vworkbpp #	12	27
sw Vworkbpp # length		27
sw Vworki #		55
sw Vworkpp #	-35
sw tarea #		46
sw tarea # length		47
sw tdefect #		45
sw tdefect # length		41
sw tfixture #		33
sw tfixture # length		33
sw tmaterial #	-62	-28
sw tmaterial # length		-27
sw tpart # length		-28
sw tsurface #	20
sw tsurface's #	37
sw tsurfaceVworkb #		31
sw tsurfaceVworkb # length		31
sw tsurfaceVworki #		33
sw w #	-29
sw w # length		35
sw w # temperature		-25
sw w <q>	69	21
sw w by		44
sw w by length		44
sw w in		-41
sw w in length		-18
sw w long		39
sw w long length		39
sw w of		-30
sw w of length		-30
sw w on		26
sw wly #	9	32
sw wly # length		32
system both														28
system both one									16					30						16
system both whole									16					30						16
system both+									-37	62
system both+ one									-39	66
system both+ whole				-21					-38	65
system metric						22
system metric <100						72													14
system metric <1000						70
system metric <115									-30		-23
system metric <12						54			-28	43	-28
system metric <16												21
system metric <2						-22
system metric <26										30
system metric <3						-29
system metric <3000						65
system metric <40						64
system metric <400																	56
system metric <5																25
system metric <50										30	28
system metric <600						65
system metric <8									-12		-21					47
system metric decimal						-35		65				-20	-21					-17
system metric one						19
system metric pair1						42
system metric pair2				-25		33
system metric whole						24
system none <100									64
system none <1000						94
system none <115									51
system none <12														22
system none <130									28				69
system none <16				39
system none <160						44			25
system none <20									-10				40
system none <200						71
system none <26												35
system none <260						59			24				46
system none <3000						77
system none <32											-21										36
system none <40				49					30
system none <400						26			22
system none <50				-30					47
system none <60				33					41
system none <600						64																-21
system none <72				36					34			28
system none <85									43			26
system none decimal				-18		-17			-13					41
system none pair2				97		34
system us <0.1															-30
system us <0.6				46														34
system us <1																		46
system us <100						-13					47				33
system us <1000				-34		-61
system us <115									37						33							-41
system us <130				33					49
system us <160									76
system us <20				57					35			28
system us <26				56									23
system us <260				-17		-36							21		-31					39
system us <3000				-12		-59
system us <32				47
system us <40				37
system us <400				-11		32									26							-28
system us <50				62
system us <60				46					19
system us <600				-23		-48									-33							65
system us <72				35					43						38					35
system us <8					19
system us <85				29
system us decimal									-22				48					40	29
system us pair1					24
system us pair2				67	27
topic airflow				32								-16								23
topic airflow <8 length		-24
topic airflow <85		28
topic airflow flow		32
topic airflow length		-24
topic airflow none				55										31
topic airflow us									-31			-19								22		27
topic airflow whole				22								-16								29		21
topic angle											46
topic angle <0.6 length		-6
topic angle <16		40
topic angle <16 length		40
topic angle <2	-27
topic angle <3	-47
topic angle <5												40
topic angle none						44
topic angle us											45
topic angle whole											44
topic current														77
topic current <12													30
topic current decimal													21	93
topic current none														33
topic current us												-27		69								-26
topic current whole														27
topic draft	-26																	62
topic draft <26	-66			-15
topic draft <5		-77
topic draft decimal									-34									106
topic draft none									-26									37
topic draft pressure		31
topic draft us				19					15									45				-38
topic draft whole									19
topic heat				-13					65	24
topic heat <0.6		-9
topic heat <0.6 length		-9
topic heat <1		-18
topic heat <1 length		-18
topic heat <100	57								63										13
topic heat <12		-37								52
topic heat <16		-37
topic heat <16 length		-62
topic heat <160		26
topic heat <2	-76	29							-44
topic heat <2 length		43
topic heat <20	47			-43					76						45				23
topic heat <26				-23						37			60									-23
topic heat <3	-59								-31
topic heat <32		14
topic heat <5	-52	38							-18
topic heat <5 length		26
topic heat <50		32
topic heat <60	27			-16					76
topic heat <72	43	27				-15			37	45
topic heat <8		27
topic heat <85									50
topic heat length		-25
topic heat metric						24			-33	55
topic heat none									106	-20			-16
topic heat other		-22
topic heat pressure		25
topic heat temperature		67
topic heat us				-21					71
topic heat whole									71	26
topic light	-34	52
topic light <2	-26
topic light length		55
topic moisture	-29			-25								110
topic moisture <0.6		35
topic moisture <0.6 length		35
topic moisture <12		-11
topic moisture <12 length		-25
topic moisture <2 length		21
topic moisture <5	-58	30										21			-29
topic moisture metric						-19						52
topic moisture none												96
topic moisture percent		50
topic moisture us				-33								62
topic moisture whole				-26								97
topic none	-28
topic none <0.1	-64	40
topic none <0.1 length		24
topic none <0.6	-26			43									-16
topic none <0.6 slope		21
topic none <1		-28
topic none <1 length		-26
topic none <100		18		-26					43
topic none <1000						57
topic none <1000 length		-20
topic none <115	-42								21		-21
topic none <12	-26
topic none <12 area		-25
topic none <12 current		-37
topic none <130				29									39
topic none <16	-31
topic none <160		32				42
topic none <160 length		9
topic none <2	-31
topic none <20												31
topic none <200		40
topic none <26				31								18
topic none <26 percent		47
topic none <260		40		-15		38							-39				31			32
topic none <3	-30
topic none <3000				-15		77
topic none <32		27		36										19
topic none <40				47
topic none <400	-50
topic none <5	-23	-16
topic none <5 area		-25
topic none <50				46					31
topic none <60	19			56					32
topic none <600	30	36		-22		30																33
topic none <72									24											32
topic none <72 length		28
topic none <8	-32	-16
topic none <85		-18		57		-15	31
topic none <85 length		25
topic none both				-20					28					33
topic none both+						25
topic none current		-33
topic none decimal													-36					26	32
topic none huge	-46
topic none metric						20
topic none slope		20
topic none temperature		-48
topic none voltage		-24
topic none weight		-26
topic ohms				36															42
topic ohms length		-32
topic ohms none				54															20
topic ohms other		54
topic ohms us									31										34
topic ohms whole				40					32
topic place	-28
topic place <1		-17
topic place <12												-19
topic place <2	-32
topic place <20		38
topic place <20 length		36
topic place <26		67
topic place <3	-29	-16
topic place <40		31
topic place <40 length		25
topic place <5	-29	-10
topic place <72				-29					58			39
topic place <8	-23
topic place <8 length		25
topic place area		37
topic place metric						-19						-19
topic place none				19
topic pressure		22													55	25	27
topic pressure <100		27
topic pressure <12	-26								-19				35		36
topic pressure <16		-33
topic pressure <16 length		-38
topic pressure <2	-68															-30
topic pressure <5 length		-23
topic pressure length		-16
topic pressure metric						-23									-28	72	72
topic pressure none												-18			55
topic pressure pressure		37
topic pressure us				-20											62
topic pressure weight		17
topic pressure whole															61	29	31
topic space <0.1		30
topic space <0.1 length		30
topic space <1		38
topic space <1 length		38
topic space <100		-14		34		46
topic space <100 length		-28
topic space <1000	12					74
topic space <12				34										25
topic space <16				35	22
topic space <160		-35
topic space <160 length		-35
topic space <2	-36
topic space <20				32	-29				44				32
topic space <200	37					71
topic space <26	26			69
topic space <26 length		32
topic space <260		-50											63
topic space <3	-41					-15
topic space <3000						20
topic space <32				39					-27												25
topic space <40		33		36
topic space <40 length		33
topic space <400	45			-18		83											20
topic space <5	-44	39
topic space <5 length		35
topic space <50		28			41																	-35
topic space <50 length		30
topic space <60	40	39		30		34
topic space <60 length		39
topic space <600	24	82				68
topic space <72	30	40		75		22			-26
topic space <72 length		37
topic space <8					32
topic space <85		42				53
topic space <85 length		41
topic space area		-14
topic space both+						29
topic space decimal				-18		-40		73				-18	28	17	-24				-18
topic space metric						49
topic space none						47
topic space us				31
topic space volume		-12
topic torque	-43
topic torque length		-30
topic torque torque		22
topic voltage		23
topic voltage <0.6 length		-6
topic voltage <1000						31
topic voltage <12	-39	32
topic voltage <130	46								27				68
topic voltage <16 length		-28
topic voltage <2	-43
topic voltage <2 length		14
topic voltage <20		30
topic voltage <26		28
topic voltage <3	-28	-38
topic voltage <3000						35
topic voltage <32		-15
topic voltage <5	-36
topic voltage <8	-62	42
topic voltage <8 length		40
topic voltage decimal				17									52
topic voltage metric												29
topic voltage none									23				28
topic voltage percent		23
topic voltage voltage		49
topic weight	-32											-29	40	32	-32
topic weight none												-16	27								24
topic weight us													30	36	-37							20
topic weight weight		40
topic weight whole												-30		31	-34							16
topic- airflow	14	-32			13															33
topic- airflow <16		72
topic- airflow length		-33
topic- airflow us					18															42
topic- airflow whole					14															36
topic- angle		29		20
topic- angle length		27
topic- angle us				25
topic- current	48	73											44	62
topic- current none									26				52	-32
topic- current us														56
topic- current whole													47	60
topic- draft		27																22
topic- draft length		37
topic- draft us																		28
topic- heat									19
topic- heat <12	-23	23
topic- heat <12 length		15
topic- heat <16	64			-19	44										27				76
topic- heat <2	49	-44		26	47
topic- heat <2 length		-51
topic- heat <3	-41								-24
topic- heat <32				-20											-26						21
topic- heat <40				20							34
topic- heat <5																					36
topic- heat <60		15
topic- heat <72	31	40		-8					23						29
topic- heat decimal													-20					39	77		34
topic- heat metric						43
topic- heat none				-18																	26
topic- heat pressure		69
topic- heat us					24				23
topic- heat whole									24
topic- light	14	42
topic- light length		51
topic- light none						-28			-20
topic- moisture	-22
topic- moisture <12		-29				-19	24					34
topic- moisture <2	-19
topic- moisture <26		15
topic- moisture <3	-27
topic- moisture <5		-25
topic- moisture metric												29
topic- moisture none				24		19
topic- moisture percent		38
topic- moisture us																				-28
topic- ohms	25	18							-27							20			36
topic- ohms length		17
topic- ohms none									-14
topic- ohms us									-29										42
topic- ohms whole									-31							26
topic- place <1		-23
topic- place <1 length		-23
topic- place <100		29
topic- place <12	-10											52
topic- place <16	11	-16		31								28
topic- place <16 length		-16
topic- place <2	-35			-12
topic- place <2 length		21
topic- place <20		35
topic- place <20 length		36
topic- place <26		36
topic- place <26 length		36
topic- place <3	-28	-18
topic- place <3 length		-18
topic- place <32		17
topic- place <32 length		17
topic- place <40	65			56					20		69
topic- place <5		31		-16	27
topic- place <5 length		27
topic- place <50		54									31											35
topic- place <50 length		36
topic- place <60		17
topic- place <60 length		17
topic- place <72		52
topic- place <8						21
topic- place <8 length		-25
topic- place <85		-21
topic- place length		25
topic- place none						31						34
topic- pressure																		16
topic- pressure <0.6		-19
topic- pressure <2	-33	-13													-43							-17
topic- pressure <5	16															27		38
topic- pressure <72	-38								-21
topic- pressure <8																		32
topic- pressure decimal																		64
topic- pressure length		-26
topic- pressure metric										55						28
topic- pressure none				49
topic- pressure pressure		58
topic- pressure us				-34														30				-32
topic- pressure weight		-51
topic- space <0.6		37
topic- space <0.6 length		37
topic- space <1		24
topic- space <1 length		24
topic- space <100		59
topic- space <100 length		59
topic- space <12				51
topic- space <16				37
topic- space <2	-37
topic- space <20												43
topic- space <26	-80			-64
topic- space <3				32
topic- space <32	34	-15		57		-15						32
topic- space <32 length		-15
topic- space <40		22				19
topic- space <50	-40
topic- space <60		-41
topic- space <600						23
topic- space <72				-16		25			22
topic- space <8	19	20			42
topic- space <8 length		39
topic- space <85		17				-17
topic- space <85 length		25
topic- space both				-23		24			53
topic- space decimal				-12										61				23
topic- space us				28
topic- torque	60	45		-11
topic- torque whole				-11
topic- voltage	-34	-23											29
topic- voltage <12							21					31	31
topic- voltage <16		-37
topic- voltage <26		27
topic- voltage <3	-47								-28
topic- voltage <5				32
topic- voltage <8		-22
topic- voltage metric						27
topic- voltage none													41
topic- voltage percent		34
topic- voltage voltage		-48
topic- weight	-27	68																				23
topic- weight length		69
topic- weight us																						27
topic- weight whole																						23
topic-- airflow	10	30																	21	22
topic-- airflow length		26
topic-- airflow us																			25
topic-- airflow whole																				23
topic-- angle <12		33
topic-- angle <12 length		33
topic-- current		-16											29
topic-- current none													38
topic-- draft		-25		28
topic-- draft <2	-15							31	-20
topic-- draft length		-36
topic-- draft us				34																14
topic-- draft whole				29
topic-- heat															18
topic-- heat <0.6		-20
topic-- heat <0.6 length		-24
topic-- heat <16	17														25
topic-- heat <2	-32
topic-- heat <3	-23
topic-- heat <5		58
topic-- heat <5 length		58
topic-- heat <8																					30
topic-- heat decimal				-30															17		77
topic-- heat metric						15
topic-- heat us				-21											28						18
topic-- heat whole															21
topic-- light	-36	25
topic-- moisture												30
topic-- moisture <16		38
topic-- moisture <3	20			37
topic-- moisture none												60
topic-- moisture us															29
topic-- moisture whole												37
topic-- ohms		41																	19
topic-- ohms us				-17															24
topic-- place <0.6		30
topic-- place <0.6 length		30
topic-- place <1		61
topic-- place <1 length		61
topic-- place <12	20	-56		37
topic-- place <12 length		-48
topic-- place <16		48		41
topic-- place <2	-32	83
topic-- place <2 length		85
topic-- place <26		-66
topic-- place <26 length		-69
topic-- place <3	-20			-12
topic-- place <32		31
topic-- place <32 length		28
topic-- place <5																24
topic-- place <5 length		-26
topic-- place <50		-17
topic-- place <60		24
topic-- place <72		-15
topic-- place <8															-17						24	16
topic-- place area		63
topic-- place metric						35		-35								30
topic-- place none				26
topic-- place whole				22
topic-- pressure	8	49													32		21
topic-- pressure <2	-40								-19
topic-- pressure length		47
topic-- pressure metric																	55
topic-- pressure us				30											51
topic-- pressure whole															19		23
topic-- space <0.6		-25
topic-- space <0.6 length		-34
topic-- space <1		32
topic-- space <1 length		32
topic-- space <12	26	21				16								28
topic-- space <12 length		18
topic-- space <16		-21										24
topic-- space <2	-29	-37
topic-- space <2 length		-37
topic-- space <3	-23
topic-- space <40		42
topic-- space <40 length		42
topic-- space <5		-35			27
topic-- space <5 length		-37
topic-- space <60	24								34
topic-- space <72	-30			37					-16			21
topic-- space <8														30
topic-- space metric						26
topic-- space none												23
topic-- space percent		-13
topic-- voltage	19
topic-- voltage <16		58
topic-- voltage <2					47
topic-- voltage <3	-14
topic-- voltage <5	-24			-14								39
topic-- voltage metric												29		22
topic-- voltage us				38	22
topic-- weight	-49	-30				-24								32
topic-- weight whole						-24
topics 	-28
topics  <0.1	-64	40
topics  <0.1 length		24
topics  <0.6	-26			43									-16
topics  <0.6 slope		21
topics  <1		-28
topics  <1 length		-26
topics  <100		18		-26					43
topics  <1000						57
topics  <1000 length		-20
topics  <115	-42								21		-21
topics  <12	-26
topics  <12 area		-25
topics  <12 current		-37
topics  <130				29									39
topics  <16	-31
topics  <160		32				42
topics  <160 length		9
topics  <2	-31
topics  <20												31
topics  <200		40
topics  <26				31								18
topics  <26 percent		47
topics  <260		40		-15		38							-39				31			32
topics  <3	-30
topics  <3000				-15		77
topics  <32		27		36										19
topics  <40				47
topics  <400	-50
topics  <5	-23	-16
topics  <5 area		-25
topics  <50				46					31
topics  <60	19			56					32
topics  <600	30	36		-22		30																33
topics  <72									24											32
topics  <72 length		28
topics  <8	-32	-16
topics  <85		-18		57		-15	31
topics  <85 length		25
topics  current		-33
topics  huge	-46
topics  slope		20
topics  temperature		-48
topics  voltage		-24
topics  weight		-26
topics airflow									-26			-20								40		20
topics airflow flow		27
topics airflow space		-27
topics airflow space length		-27
topics angle	-37	29		-19							62
topics angle <0.6		-24
topics angle <0.6 length		-29
topics angle <3	-46
topics angle length		23
topics angle space						32
topics angle space <0.6		30
topics angle space <0.6 length		30
topics current														74
topics current weight		-27
topics draft																		46
topics draft <26	-28
topics draft airflow length		-19
topics draft space		38
topics draft space length		37
topics heat	19			-22					84	48			26
topics heat <12										56
topics heat <50		32
topics heat <60	18								55
topics heat <72	22			-28		-15			38	52
topics heat length		-17
topics heat ohms		-17
topics heat place		69							47
topics heat pressure		29													42
topics heat space		29		30		-21			20	33
topics heat temperature		52
topics heat voltage		17				30
topics heat voltage space									39
topics light	-19	48
topics light <2	-26
topics light space		24
topics light space length		24
topics moisture	-31			-37								68
topics moisture percent		49
topics moisture place <0.6		19
topics moisture place <0.6 length		19
topics moisture place length		47
topics moisture space		30													53							-50
topics moisture space place		32
topics moisture space place length		28
topics moisture voltage	53					-24						109
topics ohms	-42	-26							-15										33
topics ohms length		-26
topics ohms space length		18
topics place	-27
topics place <3	-23	-45
topics place <3 length		-31
topics place <5	-24
topics pressure	42			-19		-28									65	46	47
topics pressure draft pressure		22
topics pressure length		-17
topics space <0.1		27
topics space <0.1 length		28
topics space <1		33
topics space <1 length		33
topics space <100				40		48			-29
topics space <1000						49
topics space <115 length		-20
topics space <12	25	52		41										28
topics space <16		45		37	25
topics space <16 length		44
topics space <160		-35
topics space <160 length		-35
topics space <2	-35
topics space <20				50	-31								30
topics space <26				51
topics space <260	27	-52		-12									71		-31
topics space <3	-39					-14		21
topics space <32										25	-23										31
topics space <40				32
topics space <400	45			-18		83											20
topics space <5	-41
topics space <50		25			47
topics space <50 length		29
topics space <60		42
topics space <60 length		42
topics space <600	24					68
topics space <72		35
topics space <72 length		35
topics space <8					36
topics space <85	67	29		66		62
topics space <85 length		29
topics space area		-27
topics space place	-27
topics space place <2		33
topics space place <2 length		33
topics space place <5	-14
topics torque torque		23
topics voltage		35											35
topics voltage <12	-34
topics voltage <130	41												78
topics voltage <2	-31
topics voltage <3	-25
topics voltage <5	-28
topics voltage <8	-32	46
topics voltage length		28
topics voltage place		-43
topics voltage place length		-43
topics voltage space	33	26		55
topics voltage space <0.6		38
topics voltage space <0.6 length		38
topics voltage space length		22
topics weight															-29						28	30
unit A		-41
unit C		-14
unit F		24
unit L		-38
unit bar		-12
unit cm		79
unit ft		-12
unit gal		-44
unit gpm		18
unit in wc		-49
unit in-lb		31
unit in/ft		26
unit m		-25
unit micron		22
unit mm		26
unit ohm		25
unit psi		86
unit sq ft		26
unit sq m		71
unit square		-120
use buy whole	-60	-81
use buy whole length		-57
use have whole		-19
use measure decimal		32
use measure fine		28
use measure fine length		28
use measure half		49
use measure half length		46
use measure quarter		31
use measure quarter length		31
use measure whole	14	28
use measure whole length		28
use move whole length		10
use need quarter		-28
use need quarter length		-28
use need whole	-14	-35
use need whole length		-21
use null decimal	38
use null decimal current		33
use null decimal voltage		26
use null whole area		20
use null whole flow		27
use null whole other		42
use null whole temperature		36
use null whole weight		-29
use other decimal	-24	36
use other decimal length		32
use other half		28
use other half length		29
use other whole	-14
use other whole area		63
use other whole percent		37
use other whole temperature		-48
use say fine		57
use say fine length		57
use say half		-28
use say half length		-31
use say whole		17
use see whole	-28	-45
use use whole	-23	-40
use use whole length		-36
use work decimal		47
use work quarter length		-25
use work whole	-25
use work whole area		-31
use work whole other		-26
use work whole weight		30
verb # # percent		27
verb # <q>	-78
verb # <t>		-11
verb # @ length		-15
verb # and	26
verb # area		17
verb # at		20
verb # at length		-27
verb # cut		19
verb # cut length		19
verb # decimal	19
verb # decimal current		34
verb # decimal length		-11
verb # decimal voltage		26
verb # flow		28
verb # on	-25
verb # other		33
verb # over		31
verb # over length		31
verb # slope		26
verb # temperature		23
verb # whole area		14
verb # whole temperature		23
verb # whole weight		-28
verb # within		21
verb # within length		21
verb be ahead	-17	-24
verb be ahead whole	-17
verb be ahead whole length		24
verb be behind						20
verb be behind a	-66
verb be behind about		-33
verb be behind about length		-37
verb be behind and		-14
verb be behind and length		-14
verb be behind at	65
verb be behind by		35
verb be behind by length		31
verb be behind decimal	-41	30
verb be behind decimal length		26
verb be behind fine		35
verb be behind fine length		35
verb be behind half		29
verb be behind half length		28
verb be behind on	-33
verb be behind only		19
verb be behind only length		19
verb be behind out		-14
verb be behind over		-46
verb be behind over length		-46
verb be behind percent		30
verb be behind pressure		24
verb be behind the		-26
verb be behind the length		-26
verb be behind whole percent		30
verb blow behind															54							-53
verb bring behind	-24	-54												34
verb bring behind length		-30
verb bring behind whole		-69
verb buy behind		-55
verb buy behind length		-26
verb call behind				32		-19								35
verb check behind		-23
verb come behind	-48	34				-22			19						-17							16
verb come behind length		39
verb come behind whole	-24
verb come behind whole length		18
verb count behind	-38
verb count behind whole	-38
verb cut behind							41
verb cut behind at		29
verb cut behind at length		26
verb cut behind cut	-15
verb cut behind length		30
verb cut behind whole		20
verb cut behind whole length		20
verb do behind	-14	-31
verb do behind whole	-14	-32
verb drill behind	-23			-19
verb drill behind whole	-23
verb drop behind	-34													-12
verb find behind		36
verb find behind length		31
verb finish behind	-23	24		-14
verb finish behind length		24
verb finish behind whole	-23
verb get ahead	-32
verb get ahead whole	-32
verb get behind got		72
verb get behind length		-15
verb get behind the	-21
verb get behind whole		-20
verb get behind whole length		-39
verb give behind	35	-37												57
verb give behind whole	35	-33
verb go behind		34		60
verb go behind length		52
verb go behind whole length		34
verb grab behind	-19
verb grab behind whole	-19
verb hang behind				42
verb hang behind whole		35
verb hang behind whole length		42
verb have ahead	-27
verb have ahead #	-28
verb have ahead whole	-27
verb have behind				26
verb have behind had	-27
verb have behind has	-20
verb have behind whole		-13
verb hit behind	-22								29
verb hit behind whole	-22
verb hold behind		30
verb hold behind held		19
verb hold behind length		23
verb hold behind whole		22
verb lay behind		-24
verb leave ahead		-45
verb leave ahead whole		-45
verb leave behind																29
verb leave behind whole		28
verb leave behind whole length		21
verb make behind									31
verb make behind whole		-19
verb make behind whole length		-18
verb measure behind		34
verb measure behind fine		24
verb measure behind fine length		24
verb measure behind length		28
verb measure behind whole		35
verb move behind	-45	26		-33
verb move behind length		27
verb move behind whole	-45	30
verb move behind whole length		31
verb must behind				48
verb need behind	-16	-22
verb need behind length		-30
verb need behind need		-17
verb need behind need length		-17
verb need behind needs	41	56
verb need behind of		-35
verb need behind of length		-35
verb need behind whole	-29	-39
verb need behind whole length		-51
verb null ahead	-31	-47
verb null ahead #	-30
verb null ahead length		-35
verb null ahead whole	-31
verb null behind a		-32
verb null behind a length		-21
verb null behind all	-20
verb null behind at	56
verb null behind by	30	26
verb null behind by length		26
verb null behind decimal	75	20
verb null behind good		23
verb null behind good length		23
verb null behind got	-32
verb null behind half		-11
verb null behind half length		-11
verb null behind in		-18
verb null behind in length		-18
verb null behind is		8
verb null behind is length		8
verb null behind maybe		-24
verb null behind maybe length		-24
verb null behind only	52	41
verb null behind only length		41
verb null behind out		65
verb null behind over		38
verb null behind over length		38
verb null behind that's	-19
verb null behind the	-21
verb null behind there's	-25
verb null behind to		22
verb null behind to length		20
verb null behind whole	-18
verb open behind	-45			22
verb order behind	-34	-89		-15
verb order behind length		-89
verb order behind whole	-34
verb patch behind				28
verb pick behind	-48			-21
verb pick behind whole	-48
verb pitch behind		27
verb pitch behind length		25
verb prime behind	-31			-20
verb prime behind whole	-31
verb pull behind	-24	33		-19
verb pull behind whole	-24	34
verb put behind															71							-33
verb put behind whole		24
verb put behind whole length		22
verb read behind	50			-26					21			35							31
verb read behind reads	32
verb read behind whole	52
verb rip behind		45
verb rip behind length		45
verb rip behind to		40
verb rip behind to length		40
verb run behind	-16																				37
verb run behind whole	-25
verb run behind whole length		35
verb sag behind		22
verb sand behind	-42
verb sand behind whole	-42
verb say behind										17		40
verb say behind say		54
verb say behind says	-18	24
verb say behind says length		15
verb say behind whole		31
verb send behind		-32
verb send behind length		-32
verb send behind whole		-32
verb send behind whole length		-32
verb set behind				21		29									26
verb set behind to	25
verb shim behind		19
verb shim behind length		19
verb should behind	39																	44
verb should behind be	39
verb should behind whole	27
verb sit behind		21
verb sit behind half		20
verb sit behind half length		20
verb sit behind length		21
verb stick behind		50
verb stick behind length		51
verb swap behind	-50	-65		-26
verb swap behind length		-65
verb swap behind whole	-44
verb take behind		-20		19									24
verb take behind length		-27
verb take behind whole		-32
verb take behind whole length		-42
verb tell behind		-67
verb tell behind length		-67
verb think behind		16
verb turn behind											35
verb use behind	-23	-22		-13
verb use behind length		-19
verb use behind whole	-23
verb want behind at	51
verb want behind length		16
verb want behind quarter		-39
verb want behind quarter length		-39
verb want behind wants		-24
verb want behind wants length		-24
verb want behind whole		15
verb want behind whole length		43
w # at		22
w # deep	21	48
w # deep length		48
w # long		50
w # long length		50
w # more	-46
w # of	-29	-8
w # on		-13
w # on length		-16
w # up		27
w # up length		27
w - #	-27
w <q> #	-46	-44
w a #	-20	-22
w a hole		17
w a hole length		17
w about #		34
w about # area		18
w about by		17
w about by length		15
w about long		27
w about long length		27
w about of		25
w about of length		26
w all #	-27
w are #		-9
w are # length		-9
w at #		39
w at centres		-29
w at centres length		-29
w at off	42	-16
w at off length		-16
w be #		45
w be # length		46
w by #	24	27
w by # length		24
w cut #		19
w cut # length		19
w down #		40
w down # length		40
w every #		29
w every # length		29
w for #	-41
w good #		22
w good # length		22
w had #	-33
w have #	13
w in #	-40
w is and		17
w is and length		17
w is low		36
w is low length		30
w is short		46
w is short length		46
w it #		31
w it # length		25
w it's #	23	12
w like #		23
w like # length		25
w maybe #		25
w maybe # length		21
w not #	-48
w of #	-43
w only #		25
w only # length		25
w out # length		40
w over #	-21
w reads #		17
w says #		21
w says to	-39
w the #	-31	-39
w the # length		-34
w to #	14
w up #		39
w up # length		39
w was #		-36
w+1 # decimal		33
w+1 # decimal length		15
w+1 # volume		-18
w+1 -	-28
w+1 - whole	-28
w+1 <q>		-16			32								10		-18
w+1 <q> length		-17
w+1 <q> whole		-32
w+1 <q> whole length		-41
w+1 <t>	-21	-39		28											-25
w+1 a	43			-23					-20				-27	129
w+1 above		37
w+1 above length		37
w+1 across	38	37		38									55
w+1 across length		37
w+1 across whole	37
w+1 aff		20
w+1 aff length		20
w+1 after		47										-21							30
w+1 all		-16
w+1 all length		-19
w+1 all whole		-15
w+1 all whole length		-19
w+1 and				19
w+1 and fine		24
w+1 and fine length		23
w+1 are	-14
w+1 are whole	-14
w+1 at	25	25		-17					19	70
w+1 at fine		24
w+1 at fine length		24
w+1 at half		15
w+1 at half length		15
w+1 at length		29
w+1 at whole	25	21
w+1 at whole length		30
w+1 before																			43
w+1 before whole	-22
w+1 behind		48
w+1 behind length		48
w+1 below		53
w+1 below length		53
w+1 below whole		37
w+1 below whole length		37
w+1 between		39
w+1 between length		39
w+1 board	-24
w+1 board whole	-24
w+1 brackets	-17
w+1 brackets whole	-17
w+1 by	-14					29					-32
w+1 by whole	-16	-11
w+1 by whole length		-17
w+1 centers		26
w+1 centers length		26
w+1 centers whole		14
w+1 centers whole length		14
w+1 centres		-20
w+1 centres length		-20
w+1 centres whole		-29
w+1 centres whole length		-29
w+1 cold		18
w+1 cold whole		18
w+1 deep	39			44		47
w+1 deep fine		-61
w+1 deep fine length		-61
w+1 deep half		41
w+1 deep half length		41
w+1 deep quarter		43
w+1 deep quarter length		43
w+1 deep whole	40	49
w+1 deep whole length		49
w+1 for				15											46							-47
w+1 for length		-30
w+1 from		35
w+1 from length		35
w+1 from whole		35
w+1 from whole length		35
w+1 gap		28
w+1 gap length		28
w+1 hangers	-17
w+1 hangers whole	-17
w+1 high	18	36				39		34
w+1 high fine		21
w+1 high fine length		21
w+1 high length		35
w+1 high whole		32
w+1 high whole length		28
w+1 higher		21
w+1 higher length		21
w+1 higher whole		22
w+1 higher whole length		22
w+1 hole		40
w+1 hole length		40
w+1 hole quarter		20
w+1 hole quarter length		20
w+1 holes	-29			-20
w+1 holes whole	-29
w+1 in	21								56
w+1 in fine		31
w+1 in fine length		31
w+1 in whole	22	-23
w+1 in whole length		-12
w+1 is	-30			-19
w+1 is whole	-30
w+1 layers	-28
w+1 layers whole	-28
w+1 left whole		52
w+1 long	15			41				40
w+1 long whole		35
w+1 long whole length		35
w+1 low half		21
w+1 lower		32
w+1 lower length		32
w+1 lower whole		31
w+1 lower whole length		31
w+1 max	-31													20
w+1 more	-25
w+1 more whole	-41
w+1 no	-50	-23
w+1 no whole	-50
w+1 nos	-25
w+1 nos whole	-25
w+1 now	49	23		-15					74						47			21				-27
w+1 now whole	46	45
w+1 oc		25
w+1 oc length		25
w+1 oc whole		25
w+1 oc whole length		25
w+1 of	-26
w+1 of whole	-26
w+1 of whole length		27
w+1 off		35		69
w+1 off fine		30
w+1 off fine length		30
w+1 off length		37
w+1 off quarter		-21
w+1 off quarter length		-21
w+1 off whole		51
w+1 off whole length		55
w+1 on				-15		22															34
w+1 on half		-34
w+1 on half length		-34
w+1 on whole		46
w+1 on whole length		43
w+1 or		33
w+1 or length		33
w+1 or whole		33
w+1 or whole length		33
w+1 out		52
w+1 out fine		49
w+1 out fine length		49
w+1 out length		53
w+1 out of plumb		34
w+1 out of plumb length		22
w+1 over		37
w+1 over fine		30
w+1 over fine length		30
w+1 over half		24
w+1 over half length		24
w+1 over length		37
w+1 over whole		39
w+1 over whole length		39
w+1 panels	-16
w+1 panels whole	-16
w+1 past		-9
w+1 past length		-9
w+1 screws	-22
w+1 screws whole	-22
w+1 short	-41	43
w+1 short half		36
w+1 short length		41
w+1 short quarter		16
w+1 short quarter length		16
w+1 short whole	-41
w+1 shy		24
w+1 shy length		24
w+1 side	-20
w+1 side whole	-20
w+1 sides	-14
w+1 sides whole	-14
w+1 so		-24
w+1 so length		-24
w+1 the	-38	14
w+1 the half		24
w+1 the length		14
w+1 the whole	-38
w+1 the whole length		-11
w+1 thick whole		-39
w+1 thick whole length		-39
w+1 to				42		18
w+1 to quarter		26
w+1 to whole		34
w+1 too long		-13
w+1 too long length		-13
w+1 too long whole		17
w+1 too long whole length		17
w+1 too short		25
w+1 too short length		25
w+1 top		29
w+1 top length		29
w+1 toward		33
w+1 toward length		33
w+1 treads	-20
w+1 treads whole	-20
w+1 under whole		54
w+1 up	16	16		44		31			35
w+1 up length		16
w+1 up whole	16	54
w+1 up whole length		54
w+1 when	26					27			53
w+1 when whole	26
w+1 where		78
w+1 which															35
w+1 wide	13			59		29
w+1 wide fine		39
w+1 wide fine length		39
w+1 wide quarter		7
w+1 wide quarter length		7
w+1 wide whole	13	31
w+1 wide whole length		31
w+1 with	20			-17					45
w+1 with whole	20	36
w+2 # # volume		-18
w+2 - <q>	-28
w+2 <q> #	-84	-59		-29											-27
w+2 <q> # length		-32
w+2 <t> #		-18		36											-30
w+2 across #		26
w+2 across # length		26
w+2 and <q>		-23		23
w+2 and <q> length		-23
w+2 at the	22	29							46	53
w+2 at the length		23
w+2 behind the		38
w+2 behind the length		38
w+2 below the		34
w+2 below the length		34
w+2 by <q>		-23
w+2 by <q> length		-23
w+2 by the		49		32					-20	33	-26	30
w+2 by the length		49
w+2 centers #		25
w+2 centers # length		25
w+2 centres #		27
w+2 centres # length		27
w+2 cold #		18
w+2 deep #	33			18		41
w+2 down #		-14
w+2 down # length		-19
w+2 for <q>		26
w+2 high #		31
w+2 high # length		30
w+2 hole #		20
w+2 hole # length		20
w+2 in #		-12
w+2 in # length		33
w+2 in <q>		62
w+2 in <q> length		62
w+2 in the									28
w+2 in the length		-7
w+2 long #	43					59		45
w+2 max #	-31													20
w+2 nos #	-25
w+2 now #	59	44		-15					78						49			22				-27
w+2 of em	-42			-16
w+2 of it		-19
w+2 of it length		-27
w+2 of the	-19	34
w+2 of the length		33
w+2 of them	-37			-14
w+2 off the				65
w+2 on center		40
w+2 on center length		40
w+2 on the	24	18				36						32
w+2 out #		22
w+2 out # length		22
w+2 over <q>		32
w+2 over <q> length		32
w+2 over the		36
w+2 over the length		36
w+2 short of		40
w+2 short of length		40
w+2 short on		36
w+2 short on length		29
w+2 shy #		13
w+2 shy # length		13
w+2 shy of		19
w+2 shy of length		19
w+2 sides #	-15
w+2 thick #		93
w+2 thick # length		93
w+2 to <q>												19
w+2 to go	-55
w+2 to the	48			66		45			-14
w+2 toward the		30
w+2 toward the length		30
w+2 up #		26
w+2 up # length		26
w+2 wide #	11			45		43
w-1 # current		-21
w-1 # decimal	-30	36
w-1 # decimal length		31
w-1 # percent		27
w-1 # quarter		32
w-1 # quarter length		31
w-1 # weight		-34
w-1 # whole current		-23
w-1 # whole percent		27
w-1 # whole weight		-34
w-1 (		-62
w-1 ( length		-52
w-1 +	-23
w-1 + whole	-23
w-1 -	-31
w-1 - whole	-31
w-1 2 x length		72
w-1 <n>	-28
w-1 <n> length		27
w-1 <n> whole	-28
w-1 <q>	-33	-47
w-1 <q> length		-28
w-1 <q> whole	-16	-45
w-1 <q> whole length		-23
w-1 <t>	-25
w-1 <t> length		55
w-1 <t> whole	-25
w-1 <t> whole length		38
w-1 @ whole length		-34
w-1 a	-35	-18		-15	32	-22								29
w-1 a length		20
w-1 a whole	-32	-37
w-1 about	12					45			-19
w-1 about area		18
w-1 about fine		37
w-1 about fine length		37
w-1 about quarter		43
w-1 about quarter length		43
w-1 about whole	12
w-1 about whole area		19
w-1 all	-26
w-1 all whole	-26
w-1 and quarter		-20
w-1 and quarter length		-20
w-1 are				48		50
w-1 are quarter		49
w-1 are quarter length		49
w-1 are whole		-38
w-1 are whole length		-38
w-1 at				42
w-1 at fine		51
w-1 at fine length		51
w-1 at percent		28
w-1 at pressure		33
w-1 at weight		20
w-1 at whole		29
w-1 at whole length		-14
w-1 at whole percent		28
w-1 at whole pressure		33
w-1 at whole weight		20
w-1 back		42
w-1 back length		42
w-1 be				39	25										-22			19
w-1 be whole	27	-26
w-1 be whole length		-26
w-1 between	-23
w-1 between whole	-23
w-1 bottom		35
w-1 bottom length		35
w-1 bottom whole		35
w-1 bottom whole length		35
w-1 by	-20	22			16
w-1 by half		42
w-1 by half length		42
w-1 by length		20
w-1 by quarter		37
w-1 by quarter length		37
w-1 by whole	-20
w-1 count	-36
w-1 count whole	-36
w-1 cut	-23	24						22
w-1 cut length		24
w-1 cut whole	-39	21
w-1 cut whole length		21
w-1 down		51
w-1 down length		48
w-1 down whole		32
w-1 down whole length		26
w-1 drop		63
w-1 em	-37
w-1 em whole	-37
w-1 every	92	72		121
w-1 every length		72
w-1 every whole	92	72
w-1 every whole length		72
w-1 for		-25		-30		21								25
w-1 for whole length		58
w-1 from	34					32						36
w-1 from whole	34
w-1 gap		32
w-1 gap length		32
w-1 gap whole		20
w-1 gap whole length		20
w-1 get	22												36
w-1 get whole	22
w-1 good		39
w-1 good half		32
w-1 good half length		32
w-1 good length		39
w-1 got	-16																			29
w-1 got whole	-16
w-1 had	-28
w-1 had whole	-28
w-1 has	-23
w-1 has whole	-23
w-1 have	-18			19
w-1 have whole	-18
w-1 held		21
w-1 held whole		22
w-1 holding		-13
w-1 hole		57
w-1 hole length		57
w-1 in	-47	-7				-29											32
w-1 in whole	-28	-30
w-1 in whole length		-11
w-1 is				46
w-1 is fine		36
w-1 is fine length		36
w-1 it				31															33
w-1 it's				44					39
w-1 it's fine		44
w-1 it's fine length		44
w-1 it's half		33
w-1 it's half length		33
w-1 it's quarter		28
w-1 it's quarter length		29
w-1 like		33													-24							17
w-1 like half		24
w-1 like half length		24
w-1 like length		35
w-1 like whole		26
w-1 like whole length		29
w-1 long	-30	-9
w-1 long length		-9
w-1 long whole	-30
w-1 maybe length		-14
w-1 measure		34
w-1 need		-17
w-1 need length		-17
w-1 needs	40	55		42				24
w-1 not	-50			-18
w-1 not whole	-50
w-1 now	-19
w-1 now whole	-19
w-1 of	-34	-23
w-1 of fine		-18
w-1 of fine length		-18
w-1 of half		-35
w-1 of half length		-35
w-1 of length		-28
w-1 of whole	-34
w-1 of whole length		-15
w-1 off	-17	38
w-1 off length		38
w-1 off whole	-17
w-1 on	-35
w-1 on whole	-35
w-1 only				50		30									16
w-1 opening		22
w-1 opening length		22
w-1 other	-27
w-1 other whole	-27
w-1 out										29			31
w-1 out length		42
w-1 out quarter		43
w-1 out quarter length		43
w-1 out whole		-20
w-1 over	-30	50		-11					51		-32
w-1 over length		54
w-1 over whole	-30
w-1 past				20					41						27							-28
w-1 pulling		15
w-1 put		-62
w-1 rated																					31
w-1 read	45	45										51									73
w-1 read whole	41	45
w-1 reading	42	32		-20						24	-30	40	35					21
w-1 reading percent		27
w-1 reading whole	31	29
w-1 reads	38			-29					33				46	-30					24
w-1 reads decimal		26
w-1 reads whole	28
w-1 run		25
w-1 run length		25
w-1 said															37							-38
w-1 say		54
w-1 say length		36
w-1 say whole		50
w-1 says		25							26
w-1 says length		18
w-1 says whole		50
w-1 set									52				-23
w-1 short		54
w-1 short length		54
w-1 take		29
w-1 take length		29
w-1 that's	-19
w-1 that's whole	-19
w-1 the	-25	-56
w-1 the half		-25
w-1 the length		-51
w-1 the whole	-24	-56
w-1 the whole length		-49
w-1 there's	-25
w-1 there's whole	-25
w-1 to	23	52							34						21
w-1 to other		22
w-1 to quarter		19
w-1 to quarter length		19
w-1 to whole	18
w-1 to whole other		22
w-1 took	-35
w-1 took whole	-27
w-1 under												35
w-1 up		27
w-1 up half		32
w-1 up half length		27
w-1 up length		39
w-1 up whole length		27
w-1 wall		-47		34		-26						31
w-1 wall length		-47
w-1 want				-15		20
w-1 wants		-16											27
w-1 wants length		-21
w-1 was				-14		-23			27								29	-22
w-1 was fine		-15
w-1 was fine length		-15
w-1 was whole		-28
w-1 with	-33
w-1 with length		-42
w-1 with whole	-33
w-1 within		36
w-1 within length		36
w-2 # # current		-21
w-2 # # percent		27
w-2 # # weight		-34
w-2 # <q>	-40												-18
w-2 # about		-8
w-2 # about length		-10
w-2 # all	-26
w-2 # cut	-13
w-2 # it's				45					42
w-2 # other	-21
w-2 # that's	-19
w-2 # there's	-25
w-2 # want				-12											26					15
w-2 <q> -	-26
w-2 <q> and	-38	20
w-2 <q> and length		20
w-2 <q> at		-39
w-2 <q> at length		-42
w-2 <q> by					25
w-2 <q> of	-31
w-2 <q> to	-38
w-2 <q> x	-34
w-2 a good		38
w-2 a good length		38
w-2 by about		16
w-2 by about length		16
w-2 cut at		18
w-2 cut at length		18
w-2 down to	42	30		-17					48						31					23
w-2 down to length		22
w-2 for about		29
w-2 for about length		29
w-2 i got				13
w-2 in about		14
w-2 in at	40			47	-28				35						-24			26				19
w-2 is a				-17										52
w-2 is only		19
w-2 is only length		19
w-2 it about		-31
w-2 it about length		-31
w-2 it at	-7								30
w-2 it to	41			37											39
w-2 it was	40								71
w-2 it's a		-65
w-2 of the	-21
w-2 out at length		-10
w-2 out of	-30
w-2 short by		-22
w-2 short by length		-22
w-2 should be	40																	40
w-2 the bottom		36
w-2 the bottom length		36
w-2 the other	-18
w-2 there was	-30
w-2 to be	-42				31										-37
ws # COP	-31
ws # PREP		34
ws # Vworkb		32
ws # tarea	-34
ws # tdefect	-30
ws # tfixture	-28
ws # tmaterial	-29
ws # tsurface	-37
ws # w		-11
ws - #	-27
ws <q> #	-46	-44
ws <q> w	44
ws a #	-20	-22
ws a PREP	-60
ws a tsurface		21
ws a tsurface length		21
ws a w		65
ws a w length		65
ws about #		34
ws about # area		18
ws about PREP		34
ws about PREP length		36
ws all #	-27
ws and w	26	21
ws and w length		21
ws are #		-9
ws are # length		-9
ws at #		39
ws at PREP	61	-11
ws at PREP length		-24
ws at w length		-6
ws be #		45
ws be # length		46
ws by #	24	27
ws by # length		24
ws cut #		19
ws cut # length		19
ws cut w		12
ws cut w length		12
ws down #		40
ws down # length		40
ws every #		29
ws every # length		29
ws for #	-41
ws good #		22
ws good # length		22
ws got w	-27
ws had #	-33
ws have #	13
ws in #	-40
ws in PREP		44
ws in PREP length		44
ws is PREP		19
ws it #		31
ws it # length		25
ws it w	21	71
ws it w length		71
ws it's #	23	12
ws it's PREP	33
ws it's tdefect		32
ws it's tdefect length		32
ws like #		23
ws like # length		25
ws maybe #		25
ws maybe # length		21
ws maybe PREP		-31
ws maybe PREP length		-37
ws not #	-48
ws of #	-43
ws of w	-33
ws on w	-16
ws only #		25
ws only # length		25
ws only PREP		-34
ws only PREP length		-34
ws only w		30
ws only w length		30
ws out # length		40
ws over #	-21
ws reads #		17
ws says #		21
ws says PREP	-13
ws take PREP		29
ws take PREP length		29
ws the #	-31	-39
ws the # length		-34
ws the tpart	-12
ws the w	-31	-39
ws the w length		-39
ws there's PREP	-25
ws to #	14
ws to PREP		36
ws to PREP length		26
ws up #		39
ws up # length		39
ws up PREP		22
ws up PREP length		22
ws up w		23
ws was #		-36
ws was w		-23
ws was w length		-25
`;
