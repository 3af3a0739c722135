/** Written by tests/learn/readings.ts: what is seen of a figure, and hundredths for bare, said, near, in, ft, mm, cm, m, F, C, deg, %, V, A, psi, bar, kPa, in wc, ohm, cfm, uF, lb, W. */
export const READINGS = `
any	95	220
any flow		21
any power		-21
any slope		26
any torque		30
any volume		-29
apart			-45
begin false decimal current		35
begin false decimal length		-14
begin false decimal other		28
begin false decimal voltage		27
begin false quarter slope		20
begin false whole	-20
begin false whole current		-22
begin false whole power		-28
begin false whole temperature		27
begin false whole torque		30
begin false whole volume		-17
begin true decimal		35
begin true decimal length		31
begin true quarter		27
begin true quarter length		26
begin true whole current		-23
begin true whole percent		25
begin true whole weight		-35
bound 	-26
bound  flow		22
bound  power		-21
bound  slope		25
bound  torque		30
bound  volume		-27
bound about	30	34		47											-16
bound about area		46
bound about length		34
bound atLeast	-47			27
bound atMost		26
bound centers		43
bound centers length		43
bound hair		33
bound hair length		32
bound over	-41			-22							-43
bound under												35
clause before			29
clause before V			36
clause before ft			32
clause behind			12
clause behind deg			32
clause behind ft			57
clause false	-23
clause false flow		21
clause false power		-21
clause false slope		26
clause false torque		30
clause false volume		-29
digits digits decimal						-14			-16			-16	25	16
digits digits decimal current		37
digits digits decimal other		27
digits digits decimal voltage		29
digits digits quarter		16
digits digits quarter length		16
digits digits whole angle		18
digits digits whole area		12
digits digits whole current		-51
digits digits whole pressure		47
digits digits whole volume		-34
digits digits whole weight		-52
digits words decimal		52		-23		-19		33	-19			42		21				42	47		-19
digits words decimal length		26
digits words quarter slope		20
digits words whole	-25
digits words whole angle		-32
digits words whole current		37
digits words whole other		-31
digits words whole pressure		-50
digits words whole temperature		45
digits words whole weight		9
end false #	-42
end false # percent		20
end false +	-24
end false -	-23
end false <n>	-29
end false <q>	-20	-23
end false <t>	-22
end false <t> length		21
end false a	-28
end false a length		29
end false all	-25
end false at length		-14
end false at pressure		35
end false be length		-6
end false between	-24
end false bottom		31
end false bottom length		31
end false by	-55	9
end false by length		9
end false cut	-13	17
end false cut length		17
end false decimal length		-12
end false decimal other		23
end false decimal voltage		23
end false down		39
end false down length		33
end false falls		19
end false falls length		19
end false from	32
end false good		34
end false good length		34
end false got	-35
end false has	-18
end false have	-44
end false held		19
end false in	-29	-30
end false is	-21
end false it	31
end false like		32
end false like length		32
end false long	-30
end false maybe		-18
end false maybe length		-31
end false needs		56
end false now	-23
end false of	-23	-38
end false of length		-38
end false off	-18	24
end false off length		24
end false on	-28
end false other	-22
end false over		27
end false over length		32
end false put		-61
end false quarter slope		19
end false read	28
end false says	-18
end false take		28
end false take length		28
end false that's	-16	-8
end false that's length		-8
end false the	-25	-56
end false the length		-49
end false there's	-22
end false to	33	24
end false to length		15
end false took	-28
end false up		11
end false up length		33
end false wall		15
end false wall length		15
end false wants		-34
end false wants length		-34
end false was	17
end false whole	-27
end false whole area		35
end false whole current		-27
end false whole flow		34
end false whole volume		-17
end false with	-18
end false with length		-41
end false within		25
end false within length		25
end false x	-30
end true -	-27
end true <q>	-44	-43
end true a	-24	-21
end true about		32
end true about area		20
end true all	-27
end true at		34
end true be		42
end true be length		44
end true by	20	28
end true by length		26
end true cut		21
end true cut length		21
end true decimal		33
end true decimal length		18
end true down		40
end true down length		40
end true every		30
end true every length		30
end true for	-27
end true good		24
end true good length		24
end true had	-32
end true have	16
end true in	-44
end true is	14
end true it		28
end true it length		23
end true it's	21
end true like		22
end true like length		23
end true maybe		25
end true maybe length		20
end true not	-49
end true of	-44
end true only		23
end true only length		23
end true out length		43
end true over	-20
end true says		22
end true the	-28	-40
end true the length		-35
end true to	13
end true up		38
end true up length		38
end true was	-31	-37
form decimal						-15			-17				25	19				25
form decimal area		22
form decimal current		35
form decimal other		27
form decimal pressure		22
form decimal voltage		29
form quarter slope		21
form whole	-26
form whole current		-29
form whole flow		15
form whole torque		30
form whole volume		-18
group one	-27
group one decimal		30		-10		-15			-17				26	20				25
group one decimal area		22
group one decimal current		31
group one decimal other		27
group one decimal pressure		22
group one decimal voltage		29
group one flow		21
group one quarter slope		21
group one slope		26
group one torque		30
group one volume		-27
group one whole	-27
group one whole current		-23
group one whole flow		15
group one whole torque		30
group one whole volume		-15
group pair1					16
group pair1 length		33
group pair1 whole		22			16
group pair1 whole length		28
group pair2	15	20		47
group pair2 decimal		18
group pair2 decimal length		18
group pair2 length		24
group pair2 quarter		24
group pair2 quarter length		24
group pair2 whole	13			46
group range1	-29
group range1 whole	-29
head # current		26
head # power		-56
head # slope		20
head # volume		-23
head aff		19
head aff length		19
head all		23
head all length		27
head back	-37	18
head back length		18
head board	-30
head bracket	-19
head center		49
head center length		49
head centre		-19
head centre length		-19
head cold		19
head corner	-21
head deep	42			65		30
head done	-26
head gap		22
head gap length		22
head high	12	25				29		35
head high length		24
head higher		20
head higher length		20
head hole		37
head hole length		37
head layer	-24
head long								42
head low		17
head lower		30
head lower length		30
head max						30								21
head nos	-24
head ones		-45
head ones length		-45
head panel	-17
head round		-31
head round length		-31
head run		33
head run length		33
head screw	-22
head shy		25
head shy length		25
head side	-25
head spot	-22
head the	-26
head thick	24					47
head top		31
head top length		31
head tread	-21
head way		-8
head way length		-8
head wide				32		23
headsort # current		26
headsort # decimal		25
headsort # decimal area		22
headsort # decimal current		22
headsort # decimal voltage		29
headsort # one current		33
headsort # one power		-47
headsort # one slope		20
headsort # one volume		-20
headsort # power		-56
headsort # range1	-29	-24
headsort # slope		20
headsort # volume		-23
headsort # whole current		18
headsort # whole power		-45
headsort DET one length		-24
headsort DET whole	-18
headsort OPR		-45
headsort OPR length		-45
headsort OPR one		-45
headsort OPR one length		-45
headsort OPR whole		-45
headsort OPR whole length		-45
headsort Votherp	-20
headsort Votherp one	-20
headsort Votherp whole	-20
headsort Vworkb	-37
headsort Vworkb one	-26
headsort Vworkb whole	-37	-24
headsort Vworkbp		33
headsort Vworkbp length		33
headsort Vworkbp one		33
headsort Vworkbp one length		33
headsort Vworkbpp length		18
headsort Vworkbpp one length		15
headsort Vworkpp	-11	-21
headsort Vworkpp length		6
headsort Vworkpp one	-36
headsort Vworkpp one length		8
headsort Vworkpp pair2	66
headsort Vworkpp whole	-11
headsort Vworkpp whole length		34
headsort Vworks	-34
headsort Vworks one	-21
headsort Vworks whole	-34
headsort goods	-24	-30
headsort goods one	-24	-45
headsort goods one length		-44
headsort goods whole	-24
headsort goods whole length		20
headsort tarea	-25	46
headsort tarea one	-25
headsort tarea whole	-25
headsort tsurface	-21
headsort tsurface one	-27
headsort tsurface whole	-21
headsort tsurfaceVotherb		22
headsort tsurfaceVotherb length		22
headsort tsurfaceVotherb one		22
headsort tsurfaceVotherb one length		22
headsort tsurfaceVworkb	-27	-32
headsort tsurfaceVworkb length		-45
headsort tsurfaceVworkb one	-27	-32
headsort tsurfaceVworkb one length		-45
headsort tsurfaceVworkb whole	-27
headsort tsurfaceVworks	-20
headsort tsurfaceVworks one	-20
headsort tsurfaceVworks whole	-20
headsort w decimal	58
headsort w pair2	55	47
headsort w pair2 length		47
if false	-25
if false flow		21
if false power		-21
if false slope		26
if false torque		30
if false volume		-29
is false decimal none	32
is false decimal none current		35
is false decimal none length		-22
is false decimal none voltage		24
is false decimal own		47
is false fine part		36
is false fine part length		36
is false fine pointer		40
is false fine pointer length		41
is false fine surface		34
is false fine surface length		34
is false half own		21
is false half own length		21
is false half person		-47
is false half person length		-46
is false quarter material		-24
is false quarter material length		-24
is false quarter part		50
is false quarter part length		52
is false whole area		29
is false whole fixture length		31
is false whole material	-22	37
is false whole material area		43
is false whole material length		29
is false whole none	-42
is false whole none angle		-32
is false whole none area		14
is false whole none flow		-23
is false whole none voltage		-47
is false whole own	-24
is false whole own length		23
is false whole part	-26
is false whole person	-21
is false whole person area		-14
is false whole person volume		-19
is false whole pointer	-21
is false whole tells		-14
is false whole tells length		-23
is false whole tool	-19	-16
is true fine fixture		-27
is true fine fixture length		-27
is true fine pointer		-18
is true fine pointer length		-22
is true quarter own		34
is true quarter own length		36
is true quarter surface		28
is true quarter surface length		28
is true whole material		24
is true whole material length		25
is true whole none	27
is true whole own	-34	50
is true whole own length		27
is true whole person length		-37
is true whole pointer		-13
is true whole surface	78
mate pair			42
mate pair ft			61
next air									-18
next ask						24
next attic				34
next bad										41	-26
next bar				-22		34
next bedroom									38
next bottom						44
next bracket				54				25
next broken						-37
next call				43											-33
next cap															-20							24
next capped															-26
next carpet											40
next changed															-21							23
next check				31					36
next clear				25
next closet				41
next coil				-26					59			20						42
next cold				43		21												-31
next corner				-15		38
next cover				-13
next cut				35
next cut out																	50
next dead				23		37									34
next deep				65									32
next door									36
next drop				44
next dry				-21
next edge						31
next fall						-30
next fan				22
next figure					56
next floor				43	33
next frame									40
next gap						-47						32	34
next garage				-23					43						-22
next glass						30											31
next glue															-16							18
next glued						46
next goes				70
next going				-23		46
next gone				-25
next ground											38
next guy				21
next hair						49
next hanging				42																		29
next head				77						19
next hinge				-21
next hit				28
next hole				33					-16
next house				-19
next hung				-49											29
next joist				82					35		-26			26
next keep						24							26
next keys												-22
next kit					49
next kitchen															-17					22
next laid				40
next last				29
next leave				-11		-23									30							-29
next left				33
next level				29
next long						29
next loose				-35									24
next low						-17
next make													30
next me						-37
next mud				-47					57			22
next neighbor												29
next new																					22
next old				-16	31				31				22		-28
next one						23
next open				-19
next opening						22
next other				26									14
next packed				-19
next panel													21
next part				37
next pass				62																32
next patch				25																32
next pipe					59	25
next plate				-16
next post				18		-30
next pull				61														-10
next pulled						-26						27
next pump				61
next put				23
next ran					51
next read									17									29
next replaced				-25																	41
next reset				-12
next return										22
next round				33		52
next run				48
next says									43					29					46
next screw							35
next seal				-13									39
next see									-19
next short				-22																-22
next side				-54
next spare				35		56
next split																				12
next step				43
next straight				26
next stuck																					50
next stud				47
next swap													42	-21
next take				-22
next tank				-9					41
next tape											20
next tenant					43
next the lady				28
next the wrong								33
next thing										35	18
next think									35		-25
next tile				-20								22
next time												32
next took													32							25
next top				-15		38									19
next trim						19
next truck				47																	25
next tub				46
next use				-11
next used				-36	35
next wall									38
next want				21		30			58
next water				21								27
next way					35										44
next went															33
next wet				37
next wide				-22		32
next work													39
next x				-42																24
not false	-25
not false flow		21
not false power		-14
not false slope		26
not false torque		30
not false volume		-29
not false weight		22
not true	-37	-37
not true length		-29
note			20
note %			16
note C			18
note bar			25
note cfm			68
note cm			26
note deg			14
note in wc			8
note in-lb			42
note micron			24
note ohm			35
note psi			17
note sq ft			55
note sq m			48
noun #	-30	-16
noun # metric										20							37
noun 2 x length		58
noun ^base		28
noun ^base length		28
noun ^bottom		43
noun ^bottom length		43
noun ^deep length		37
noun ^door		48
noun ^door length		42
noun ^floor	27	20		37
noun ^hole	-35
noun ^joist		-14
noun ^joist length		-16
noun ^kitchen	-25
noun ^me	-24	-44
noun ^middle		-9
noun ^middle length		-9
noun ^new		-69
noun ^new length		-77
noun ^panel	-23	36
noun ^panel length		33
noun ^screw		-68
noun ^screw length		-75
noun ^side						42
noun ^tile	-19
noun ^tread	-29
noun ^wall length		21
noun ^wide		29
noun ^wide length		29
noun ^window				53
noun base		29
noun base length		29
noun beam		22
noun beam length		22
noun bottom		52
noun bottom length		52
noun bowl															32
noun ceiling		40						33
noun ceiling length		40
noun closet		26
noun closet length		21
noun code us				31
noun corner		-31				24
noun corner length		-33
noun curb		16
noun curb length		16
noun door	51	38		47		30
noun door length		38
noun edge		33
noun edge length		33
noun filter	-26
noun flange		21
noun flange length		21
noun floor	30			-10																		-17
noun fridge				34		27			-48						27
noun gap		37
noun gap length		37
noun glass		-11
noun glass length		-11
noun hole				47
noun hole us				75
noun house	49			-39	69							24
noun inspector	-35
noun jamb		-18
noun jamb length		-18
noun joint		63
noun joint length		63
noun joist		69
noun joist length		66
noun landing		19
noun landing length		19
noun last	-20	21
noun last length		21
noun leg		-19
noun leg length		-20
noun line		39
noun long	-33
noun me		-34												45
noun me length		-34
noun mirror		58
noun mirror length		58
noun more		-40
noun more length		-40
noun new		-52
noun niche	22	36		33
noun niche length		36
noun number	-20
noun one		-7
noun opening	30			64
noun opening length		33
noun oven	27								42				37
noun overhang		41
noun overhang length		41
noun paint				-18								33
noun panel	-59			-18		-24
noun plate	-39			-24										22
noun plate us				-24										40
noun post		20
noun post length		19
noun pressure		15
noun pull		72
noun reveal		19
noun reveal length		19
noun rise		30
noun rise length		29
noun riser		48
noun riser length		48
noun screw				34
noun screwdriver		55
noun screwdriver length		55
noun seam		17
noun seam length		17
noun short		8
noun short length		8
noun side		27		23
noun side length		30
noun side us				-16					31
noun slab length		27
noun slide		29
noun slide length		29
noun slider		17
noun slider length		17
noun slope		-18
noun spec	-29
noun stud		54
noun stud length		54
noun supposed	-50			-26	35										-38
noun supposed us				-19	38										-38
noun tile	-35	46		-27
noun tile length		46
noun tile us				-29
noun track		28
noun track length		28
noun unit				20
noun wall						36
noun wall metric						39		9
noun wall none				33
noun wall us												26
noun water		12
noun water length		12
noun window	-31	26		-27
noun window length		26
nounsort #	-29
nounsort # angle		-32
nounsort # area		-16
nounsort # percent		44
nounsort tarea	-33	40
nounsort tarea <12					47
nounsort tarea <2															-17							18
nounsort tarea <3								22
nounsort tarea length		27
nounsort tarea us one					15
nounsort tarea's	-45	18
nounsort tarea's length		17
nounsort tfixture	-23	31
nounsort tfixture <600						53
nounsort tfixture <8				48
nounsort tfixture length		32
nounsort tfixture metric one						65
nounsort tfixture none one									30
nounsort tfixture us one									-14
nounsort tfixture's		-36
nounsort tfixture's length		-36
nounsort tmaterial	-35
nounsort tmaterial <1000						62
nounsort tmaterial <12																			34
nounsort tmaterial <16				-19
nounsort tmaterial <20				61	-22
nounsort tmaterial metric one						52
nounsort tmaterial none one						22
nounsort tmaterial percent		22
nounsort tmaterial us pair2				-19	-20	-20
nounsort tmaterial's	13	44
nounsort tmaterial's length		35
nounsort tmaterial's none one				38		32
nounsort tmaterial's us one				49
nounsort tmaterialVworkb	-23
nounsort tmaterialVworkb <5				39
nounsort tmaterialVworkb length		31
nounsort tmaterialVworkb metric one												28
nounsort tmaterialVworki		37
nounsort tmaterialVworki length		36
nounsort tmaterialVworks		-45
nounsort tmaterialVworks length		-59
nounsort tmaterialVworks us one				29
nounsort tpart <2														25
nounsort tpart <26				-17										22
nounsort tpart <3				29
nounsort tpart <50				58																		28
nounsort tpart <72				-23		-13			59	55												-28
nounsort tpart <8									-19					30
nounsort tpart metric one												41
nounsort tpart none one									60					23							18
nounsort tpart temperature		41
nounsort tpart us one				21					29
nounsort tpart's	16
nounsort tpart's length		14
nounsort tpart's none one													48
nounsort tpart's us one				30					25
nounsort tpartVworkb <5																					38
nounsort tpartVworkb none one				53																	34
nounsort tpartVworkb us one				33																	42
nounsort tpartVworks		55
nounsort trole	-47	23
nounsort trole length		52
nounsort tsurface		32
nounsort tsurface <1000						71
nounsort tsurface <16				58
nounsort tsurface <2				-15	39
nounsort tsurface <26				29
nounsort tsurface <3				-31		-36		28
nounsort tsurface <600						41
nounsort tsurface <8				46												42
nounsort tsurface length		32
nounsort tsurface metric pair2				-23		26
nounsort tsurface none one				16		27
nounsort tsurface none pair2						40
nounsort tsurface pressure		26
nounsort tsurface temperature		-16
nounsort tsurface us one				-18					28
nounsort tsurface's	36	39
nounsort tsurface's length		38
nounsort tsurface's none one				33						14			-19		31
nounsort tsurface's us one				47	-25						29	31			39
nounsort tsurfaceVotherb		37
nounsort tsurfaceVotherb length		37
nounsort tsurfaceVworkb none one				33
nounsort tsurfaceVworkb us one														40
nounsort tsurfaceVworki		54
nounsort tsurfaceVworki length		35
nounsort tsurfaceVworks	-21	62
nounsort tsurfaceVworks length		62
nounsort ttool	-39	-16
nounsort ttool length		40
nounsort ttool us one				-15						47
nounsort ttoolVworkb		75
nounsort ttoolVworkb length		76
nounsort w	-23
nounsort w <100						28			-26										10	28
nounsort w <1000						-39
nounsort w <130									48				-31
nounsort w <16																			30
nounsort w <2				24
nounsort w <20				54
nounsort w <26													59									-20
nounsort w <32												-22		39
nounsort w <40						30
nounsort w <50									49					26
nounsort w <60									26
nounsort w <72				26					38						22
nounsort w <8				-19	28
nounsort w area		23
nounsort w both one						27								44				22
nounsort w current		-69
nounsort w metric one						24											17
nounsort w other		-55
nounsort w pressure		27
nounsort w us one				26
nounsort w us pair2				-30
nounsort w's		-9
nounsort w's none one						36			26									25
nounsort w's us one						-26			21		38
nounsort wed	-47	32
nounsort wed length		33
nounsort wed us one				-18	35										-36
nounsort wing	-22	41
nounsort wing length		41
nounsort wly length		53
open  angle		25
open  area		26
open  current		-28
open  flow		18
open  percent		63
open  power		-8
open  slope		25
open  torque		28
open  volume		-44
open -	-53	30
open - length		36
open also	-35
open like		62
open like length		62
open now	51
open okay	-43	29
open so	-31
open then	-47
own aff		19
own aff length		19
own air		34
own anything		-28
own anything length		-28
own asked	38					25														25
own attic		54
own attic length		58
own b	-54			-30
own b us				-31
own baluster		27				39
own baluster length		27
own bar	-19					-25										75
own bar metric						-35										92
own base	-16	32
own base length		32
own bath								21		13
own bathroom length		-14
own bay	-43			-22
own bays	-23
own beam		44
own beam length		44
own bed	-29
own bedroom	-17	37
own bedroom length		38
own better	-48
own big	-15
own bit		-31		17								22
own bit length		-31
own black									35
own black us				-15					39
own blind	-23
own block	-38	32		-10
own block length		30
own board	-35	-27
own board length		-29
own bolt	-36
own bolted						24
own book	13	48		44
own book length		48
own book us				44
own bottom	-27					19							21
own bottom none						36
own bottom us													28
own bowed		57
own bowed length		57
own bowl	-15														29
own box	-51			-15
own box <8																						-28
own box none				-11					-15
own box us				-16
own boxe	-23	-26
own boxe length		-26
own br	-41
own bracket		45				25
own bracket length		42
own bracket none						26
own brick		43
own brick length		43
own bring	-35	-43												36
own bring length		-20
own bring us														37
own broke	-31			-11
own broke us				-13
own broken	-33
own buy		29
own buy length		29
own cabinet	-25	-10
own cabinet length		-10
own cable		81
own cable length		81
own call				33										32
own call us				35										34
own cap				24					-28		-22										64
own cap us				30					-18												43
own carpet		-21
own carpet length		-21
own cast		17
own cast length		17
own ceiling				36				24
own ceiling <3				25				33
own ceiling none								34
own ceiling us				28
own center				26
own center us				26
own centre	20	-13				66
own centre length		-11
own chipped	-22
own circuit	-40	-34
own circuit current		-16
own clean	-19
own clear	-21	38		-11
own clear length		39
own clear us				-11
own clearance		35
own clearance length		35
own closet	58	29		62	25
own closet length		26
own closet none				21
own closet us				57	31
own coat	-31
own code		-12																		37
own code us																				38
own cold	-29	36
own coming															57
own coming us															60
own copper		-52
own copper length		-52
own corner	-28	20
own corner length		19
own corner us												24
own count	-71
own counter		46
own counter length		46
own course		-29
own course length		-29
own cover	-38	-38		-32
own cover length		-49
own cover us				-34
own crack		53
own crack length		53
own cracked	-24	48
own cracked none				-18		20
own crown		25
own crown length		21
own curb		22
own curb length		22
own cut		24					18										22
own cut <2				-16
own cut <3				-13		-13
own cut <5								33
own cut length		31
own cut metric				-26		39	45	22									42
own cut out		31
own cut out length		27
own dead	-21
own deep	12				22	26
own deep <12				28		-21	28
own deep metric						42	26
own deep us					30
own different	27			43
own door		28
own door <5												30
own door length		35
own door metric						53
own door none						25
own double	-22
own drain				40
own drain us				44
own drawer	-22	30
own drawer length		30
own drawing		55
own drilled	-20			-16
own drilled us				-21
own drip	-39
own drop	-62			-13									12		-22
own dropped		50
own dropped length		50
own dry	-31											27
own drywall		53
own drywall length		31
own duct		24
own edge	-32
own edge length		36
own end	-38	37
own except	-18								-17
own face		79
own face length		44
own fall		-38
own fall length		-55
own fan	-31								20			-24										28
own filler		18
own filler length		18
own filter	-30
own finish	-18	-21
own finish length		-23
own first	-30
own fixed	-14
own flange		26
own flange length		26
own flat		55		32
own flat length		55
own floor				43
own floor none				57
own floor us				32																		-18
own footing	25	32		58
own footing length		32
own footing us				58
own found	36	36		-13
own frame	-25
own fridge				33		29			-47						26
own front	-46
own front length		53
own full	-18
own gap	58	49		52		51
own gap length		49
own gaps		88
own gaps length		88
own garage	18	28		34								20
own garage us												25
own gas length		-23
own gate		43
own gate length		43
own gauge		32
own gave		-30
own get	-12	-33
own get length		-18
own get none									24
own get us													25
own glass	24	-47											34
own glass length		-47
own glass us													36
own glue	-34	-12
own glued	-14	-45
own glued length		-48
own go				27
own go length		21
own go us				31
own goes		-14
own goes length		-18
own goes us				27
own going	41	52				80									20							-20
own going length		48
own gone	-13					26
own grab	-28
own gray				32
own ground		60
own guy	-30
own hair		-29
own half		-52
own half length		-24
own hall	-47	29
own hall <5									33
own hall length		26
own hall us									31
own hallway		26													-26							23
own hand	-21
own hand none									21
own handrail		60		21		39
own handrail length		60
own handrail none						47
own hang				32
own hanger	-21
own hanging				19
own head	-29
own header		19
own header length		19
own hearth		39
own heat	-32
own heater		-60
own held															51							-48
own held us															53							-50
own high	33	38				53		30
own high length		38
own high metric						28
own higher		20
own higher length		20
own hinge				22
own hinge us				28					-18
own hold		24
own hold length		20
own holding	41								66						41	37
own holding us															55
own hole		37		54
own hole <3				16		-24
own hole <5				-12
own hole length		37
own hole metric				-33		47
own hole none				61		-16
own hole us				60
own hollow						33
own hot		29
own house	21			-13	46															18
own house length		-37
own house none												21			35
own house us				-13	56															24
own hung		-7
own inspector		45		41
own inspector length		45
own inspector us				39
own instead	23			37
own instead us				37
own itself				20		29
own joint	-57	18		-52
own joint length		18
own joist		26										24
own key	-20
own kitchen	-48
own kitchen us				-22
own l		37
own land		24
own land length		24
own landing		21
own landing length		21
own last	-20			27
own last length		30
own last us				36
own layer	-21
own lean		38
own lean length		38
own leave	-30	30
own leave length		30
own left	33	27		43		22										19
own left metric																39
own left none				36		39
own left us				39
own leg													39
own leg none													44
own length		-43
own length length		-43
own light	-33	42
own light length		44
own line		29
own line length		10
own little	-16														49
own lock	-25					-20							59									-18
own long				46				26
own long us				59
own loop		42
own loose	-23
own low		27													-22							22
own low length		24
own lower		67
own lower length		65
own make		-7		-19					34
own make length		-7
own make us				-22
own mark	-17
own marked		22
own marked length		22
own max	-20			-22		26								23
own me	-26													25
own measure		49
own measure length		45
own measured	41	33																		59
own measured length		28
own measured us																				65
own meter length		-23
own mid		44
own middle	-26	56		34					-22
own middle length		56
own mirror		58		24
own mirror length		58
own mirror us				25
own missing	-48
own missing us				-16
own more	-30	-18
own more <2				27
own more length		-20
own move		32
own move length		33
own moved		25
own moved length		25
own n													39
own nail	-26
own nailed				25
own need	-17	-14
own need <2								24
own need length		-18
own need metric								25
own need us				36
own new us																						18
own niche	22	-12		33
own niche length		-12
own nos	-24
own nosing		-10
own nosing length		-10
own number	-28	38
own number length		41
own oak	-49
own oc		25
own oc length		25
own old	-21
own old us				-14
own one	31			22										42
own open	-21																					13
own open us				-43											-14							15
own opened	-42			26
own opening				47																		18
own opening us				28											-20							24
own order	-27	-18
own order length		-18
own other													15
own other none													31
own out of level		15
own out of level length		15
own out of plumb		30
own out of plumb length		22
own outlet				18
own oven		14				-21			36				33
own overhang		48
own overhang length		48
own owner						10
own pad		70
own paint		-46										22
own paint length		-46
own paint us				-19
own pane	-17			-15
own panel	-27
own pantry	-20	28
own pantry length		28
own paper	-22
own patch	77			53	-9
own patch us				63	-9
own pick	-14
own picked	-43			-18		-16
own piece				46
own piece us				50
own pipe		-20														31
own pipe length		-22
own pitche		30
own pitche length		30
own pitched		40
own pitched length		40
own place	-18	36
own place length		36
own plaster		52
own plaster length		42
own plate	-39													18
own plate us				-22										38
own plug		-39
own plugged	-13
own plumb		-37
own plumb length		-37
own ply		-39
own ply length		-39
own plywood		-18
own point	-35
own post	-19	24									24
own post length		24
own post us											29
own pressure	44	21		-18		-20									60	32	19
own pressure pressure		18
own proud of		56
own proud of length		56
own pull		71													-31							33
own pull us															-34							36
own pulled		28
own pulled length		14
own pulling		20
own pump		54
own put		-40				-18									54
own put length		-28
own put us															70							-31
own rail				21
own rain	-36
own ramp	-10
own ran	-13
own range		-34		-16										43
own range length		-34
own rated																					29
own read	24	18		-24								32	32	-25					24		43
own read none													30	-26							63
own read percent		47
own read us				-32								40							23
own reading	31	42		-21						23	-28	35	39					18
own reading none				-13								45	55	-20
own red																			38
own rest		-27
own rest length		-33
own return	-33	32							25
own return us									32
own reveal		50
own reveal length		50
own rigid		-27
own rigid length		-27
own ring		29
own ring length		28
own rip		34
own rip length		34
own ripped		34
own ripped length		34
own rise	24					32			29
own rise none						36
own riser		51		-19		36
own riser length		51
own room		19										-17
own rotted				-15	-25				40
own rough opening		29
own rough opening length		29
own round	22					37
own row	-22
own run		48			22									30
own run length		42
own run us				27	30
own running									25		-34
own running length		-18
own runs	-37	51
own runs length		51
own s	-32
own sags		23
own said	26								-39	48		56
own said us									-40	50
own salon	-20														-14							18
own sand	-50
own sanded	-76
own say		57				17
own say length		38
own says	-19
own says <16												27
own says length		-19
own says us				22
own screw		-29
own screw length		-25
own screw us				21
own seam		40
own seam length		40
own see	-25	23
own see length		23
own sent				34
own sheet	-27
own shelf				35		29
own shelf us				42
own shop	-43	39		-28
own shop length		39
own short	-26				29
own short us					34
own shot	-17
own shy		36
own shy length		36
own side		38		24
own side <5				36
own side length		39
own side metric						18
own side none				34		19
own side us				20
own sill		34
own sill length		34
own sink		32													20
own sink length		29
own sink us															23
own sit	-49	32				-35
own sit length		32
own sitting		43													32							-32
own sitting length		45
own sitting us															32							-32
own slab length		35
own slate	-26
own slider		32
own slider length		32
own slope		27
own slope length		24
own snaked		51
own snaked length		51
own spacing		24
own spacing length		24
own spec	-29
own spin	-25
own split	-32	66
own split length		66
own spot										33
own sprayed	-36
own spring	17			-18							54
own stain	-27
own stair		37				25
own stair length		37
own standing		27
own standing length		27
own start	-30								32
own static		27																				-23
own static pressure		22
own step		29		30
own step length		72
own step none						28
own step us				43
own stick		-42
own stick length		-33
own stile		-10
own stile length		-10
own stone				19
own stop		-36
own strip		-34
own stripped	-20
own stud	-38
own supposed	-52			-28	33										-37
own supposed us				-20	37										-37
own swapped		-94
own take	-25			-24		23							28
own tall	29			16	52
own tall us				16	52
own tap		-72		-22		42			62	28
own tap us				-14		31			61
own tape	-24			-16
own temp									35
own test		48
own tested	49															45				32	44
own thermostat				-19					61
own thick	20	18				45
own thick length		18
own think		41
own tile	-65			-28		-15
own tile metric						-40
own tile none				-42
own tile us				-17
own time	-26	-39				-25										33
own time length		-39
own time metric						-32
own toilet		26
own too deep		26
own too deep length		26
own too high		25
own too high length		25
own took	-17	20
own took <5				44
own took length		17
own took none				40					32
own top	37	32		56		34
own top length		25
own top none				23
own top us				63
own torqued		15
own torqued torque		15
own total	19					34								23
own track		33
own track length		33
own trap		51
own trap length		56
own trap us				20
own tread	-33	31
own tread length		31
own tub length		33
own tube		-57
own tube length		-57
own turn	-19								21
own turn none									28
own turned									-24		34
own unit	-40	32		23
own unit length		26
own unit us				31
own upstair				33
own upstair us				39
own us length		34
own used	-23	-33		-12
own used us				-13
own valve	19			35
own vinyl				-14	-24				39
own vinyl us				-14	-24				39
own vs		60
own wall		28
own wall <3						-30
own wall length		29
own wall metric						31				30
own wall none										25
own wall us				26
own want		27
own want <12				7
own want <16				46											45
own want <40				-15		31			43
own want <5																29
own want length		39
own want metric																27
own want none										22
own wanted	-19
own wanted us				38
own washer				43					-17
own waste length		-25
own water		69		-15					67
own water length		63
own water us				-16					71
own way				33
own way us				36
own went	-11			22																18
own went none				42
own went us																				25
own wet		58
own wet length		43
own white	-22	-54
own white length		-54
own wide				32		19
own wide us				22
own window	-25	31
own window length		32
own window metric						26
own window us				-20
own wood		57
own wood length		37
own wrong	-21
own x none						36
prev air		73													29
prev attic	28	40							36												35
prev attic length		41
prev attic on									38												37
prev bad		-15
prev baluster		26		37		22
prev baluster length		26
prev baluster on				37		22
prev bar						23
prev base	-37	-7
prev basement	31	43		45
prev basement length		43
prev basement on				45
prev bath	-26	-16		28					-24						18
prev bath length		-31
prev bath on															23
prev bathroom	-37	35
prev bathroom length		35
prev bed	-42			-14	-32	40
prev bedroom	34	-40			45
prev bedroom length		-46
prev bedroom on					47	12
prev bent		55
prev bent length		55
prev black		-26
prev black length		-29
prev blind		-31
prev blind length		-31
prev block		-46
prev block length		-33
prev board	-45	-23				-26
prev board length		-26
prev board on						-27
prev bottom		43										20					26
prev bottom on												22					29
prev box				-18	37														32
prev box length		16
prev box on				-18	37														32
prev bracket	-18										40
prev bracket length		-30
prev bracket on											43
prev bring		40
prev bring length		40
prev broken		31
prev buy		-52
prev call		-13																	49
prev call length		-13
prev carpet		46
prev carpet length		42
prev ceiling	-41			-16
prev ceiling on				-17
prev center		14
prev center length		14
prev check		31
prev check length		31
prev checked		49
prev chimney		22
prev chimney length		19
prev clean		21
prev cleaned	16								30
prev clear		25
prev clear length		25
prev clear on				25
prev closet		16										32
prev closet on												36
prev coat				37					-13
prev concrete	-40	21
prev corner		53		26		-16
prev corner length		52
prev corner on				35		-18
prev count	-34
prev cover	-20	46		-15
prev cover length		46
prev crack		25
prev crack length		25
prev crown		25
prev crown length		33
prev curb		10
prev curb length		22
prev cut	23	41
prev cut length		40
prev cut on						24					14						19
prev day		-23
prev deck		52		27
prev deck length		52
prev deep	33			51					28
prev deep length		31
prev deep on				51					28
prev dining room		57									45
prev dining room length		58
prev dining room on											46
prev door	-44	35
prev door length		32
prev drain		-42
prev drain length		-32
prev drop	-48	39		-19
prev drop length		26
prev dry	-33	54
prev dry length		42
prev dry new										34
prev dryer				-17									45
prev dryer on				-17									45
prev drywall		21
prev duct	15			40																33
prev duct on				40																33
prev dug		68
prev dug length		68
prev end		51
prev end length		52
prev enough		67											34
prev enough length		43
prev enough on													34
prev except		-6
prev face		-39
prev fan	58	-75			47							22								12
prev fan on					47							22								12
prev faucet		-7
prev faucet length		-11
prev fence				46
prev fence on				49								14
prev finger		18
prev finish	-46	-41		-8
prev finish length		-54
prev first	-33	43
prev first length		41
prev first on						18
prev flat				-17		11
prev flat length		27
prev flat on				-17		11
prev floor	-28			35					-22
prev floor on				42
prev flush		-34
prev flush length		-34
prev foam		52
prev foam length		52
prev found		38		30
prev found length		38
prev found on				30
prev frame		76
prev frame length		76
prev fridge	55				73				-18						20
prev fridge on					73				-18						20
prev front	-42	-15
prev front door		26
prev front door length		26
prev front length		-36
prev gap		60				24
prev gap length		60
prev garage	-39	-9
prev get		-19
prev get new											34
prev get on				24								21
prev glass	26	23		34		36
prev glass length		23
prev glass on				34		36
prev glue		-40
prev glue length		-28
prev glued	-22
prev glued length		-30
prev go						24
prev go new						21
prev go on				29									25
prev goes	-25			-17
prev goes on				-18
prev going	-46					-21		33							-28							18
prev going on						-21		33							-28							18
prev gone									-21		-18
prev gone on									-25		-22
prev guy length		28
prev gym		52
prev hall		-23				22			-27		-20
prev hall on					-32	25			-32		-23
prev hang				40
prev hang on				40
prev hatch length		47
prev head		45										39
prev head length		45
prev height		67
prev height length		67
prev held									22									27
prev high	18					50
prev high on						50
prev hinge		-17							-33	-27
prev hinge on									-40	-33
prev hits		41
prev hits length		41
prev hold		40							51
prev hole		58		27		43
prev hole length		58
prev hole on				32		45
prev house	-33	69
prev house length		70
prev house on																						-36
prev hung		39		55
prev hung length		38
prev hung on				59
prev inspector				39
prev inspector on				39
prev island	29					24									23
prev island on						24									23
prev jamb		24
prev jamb length		24
prev joist		-14
prev joist length		-15
prev kitchen	-29
prev kitchen length		-11
prev know						37
prev laid		36
prev laid length		30
prev last	-17	40
prev last length		37
prev latch		38
prev latch length		38
prev laundry		16
prev leak		21
prev leak length		23
prev leave		-22
prev leave length		-22
prev ledger		-18
prev ledger length		-18
prev left		31		-11	28					23
prev left length		29
prev left new				-16					-21	38	-26	19
prev left on					39
prev lid		20
prev light		41
prev light length		56
prev line	15			-26	27				36
prev line length		-21
prev line on				-27	27				38
prev living room		30
prev living room length		42
prev long		66							15
prev long length		51
prev long on				33
prev look	-25
prev loose	-30								26
prev loose on									28
prev lot	-25
prev low		66											38
prev made				20			27
prev make		31
prev make length		27
prev me		-23
prev me length		-17
prev measure		41
prev measure length		41
prev measured	36	70		39		-14
prev measured length		70
prev measured on				40
prev meter									-17			26	45							-39
prev meter on									-17			26	45							-39
prev missing	-34	17
prev missing length		17
prev more	-33	34						27
prev more length		33
prev more new								36
prev more on				26
prev move		51
prev move length		51
prev mrs	25					52
prev need		-29
prev need length		-35
prev need new						26		31
prev new	-36			-16									18
prev new length		-29
prev new on				-18									27
prev number	-60	32		-30
prev number on				-30
prev oak	-49	63		-39		16			-18			55
prev oak on				-39		16						55
prev old	-25	63							28			-18	24
prev old length		67
prev old on									28			-18	24
prev one						10
prev open		45
prev open length		71
prev opening		-10
prev opening length		-10
prev order	-78	-99		-21
prev order length		-89
prev order on				-22
prev outlet		-13
prev oven						27
prev paint	-32
prev panel		49		41
prev panel length		54
prev pantry		54
prev pantry length		54
prev patch		45
prev patch length		71
prev piece		-25
prev piece length		-25
prev pinned		36
prev pinned length		36
prev pipe	21	43				57
prev pipe on						58
prev place	-53			-19
prev place on				-19
prev plaster		59
prev plaster length		59
prev plug		44
prev plug length		44
prev plumb		40
prev plumb length		40
prev plumber	34	28		32													36
prev plumber length		26
prev pressure	50								-17	32					37	29						-33
prev pressure on									-18	34					38	30						-34
prev pull		32
prev pull length		29
prev pulled				-18								-31		36				28
prev pulled length		-24
prev pulled on				-18								-31		36				28
prev put		-24		-25								33			29
prev put length		-68
prev put on				-27								36			32
prev rail	43			61
prev rail on				64
prev ran	-21	-29													30
prev ran length		-33
prev ran on															30
prev range		48
prev raw	41			22								41
prev read	-36	-81		-14					-25				25
prev read on				-14					-25				25
prev replaced				-15
prev replaced length		-18
prev reset		-16
prev return	-30
prev rise		33		-27		21
prev rise length		33
prev rise on				-27		21
prev riser		25
prev riser length		36
prev rm	-49			-13					30
prev roll		40
prev roll length		40
prev roller	-68			-27
prev roof	-41	-46							30
prev roof on									32
prev room	31											40
prev room length		34
prev room on												40
prev round		-17				50
prev round length		-17
prev round on						50
prev run		36							38													-43
prev run length		28
prev run on									41													-45
prev runs		32
prev salon		44
prev sand	-40
prev says	-20	-48
prev says length		-58
prev screw	42	-16		48
prev screw length		-21
prev screw on				56
prev screwed		-48				50
prev screwed length		-33
prev screwed on				59
prev sealed																				34
prev seam		32
prev seam length		39
prev second	-43	-19		-24
prev second coat	10									48
prev second length		-19
prev second on				-24
prev see		-46										18
prev see length		-46
prev see on												21
prev sent		21
prev sent length		21
prev shed		-51
prev shelf	12	25		23
prev shelf length		25
prev shelf on				23
prev shelve		29
prev shelve length		29
prev shim		-7
prev shim length		-7
prev shimmed		30
prev shimmed length		30
prev shop	-51	-44
prev shop length		-53
prev short	-72			-16		-18
prev short on						-18
prev shower		79
prev side	32				42	31
prev side on					46	36
prev sink															16
prev sink on															22
prev sit		46
prev sits		-22
prev sits length		-22
prev sitting		35
prev sitting length		34
prev slab	40	22		35		34
prev slab length		22
prev slope		-86				-29	28
prev smoke	-53					-25
prev smoke on						-25
prev split		-31
prev split length		-31
prev squeak		-35
prev stair	31	61		26		27						28
prev stair length		61
prev stair on				28		31						30
prev start		-28
prev start length		-38
prev step		62				29
prev step length		62
prev step on						30
prev stop		-21
prev stop length		-21
prev straight		-19
prev straight length		-35
prev supply										20
prev supply on										20
prev supposed		31
prev supposed length		31
prev swap		-28
prev swap length		48
prev swapped		47							22											31
prev swapped length		24
prev sweep		55
prev sweep length		55
prev swing		29
prev swing length		29
prev take	37	28		34					-14
prev take on				34					-14
prev tap	-22
prev tape	29			54
prev tape on				20
prev taped		23		22
prev taped length		34
prev tell		24
prev tell length		26
prev temp									24
prev test	-92
prev the wrong		-34
prev thermostat									55
prev thermostat on				-14					57
prev tile	-23					22
prev tile length		-20
prev tile on						25
prev toilet		32
prev toilet length		31
prev told		27
prev took									26					35
prev took on									29					38
prev total	-42
prev track		49
prev track length		49
prev trim	-68	43		-14
prev trim length		43
prev truck	-15													48
prev truck on														49
prev tub		68
prev tub length		68
prev turned	17				22															27
prev turned on					23															28
prev unit	-65	33		-15		24
prev unit length		27
prev unit on						27
prev upper	27	53		43
prev upper length		27
prev upstair																		32			20
prev upstair on																		32			20
prev used	-64	-13		-38
prev used length		-16
prev used new				-50							34
prev valve	63	-55			56										29
prev valve on					56										29
prev vent	-25	50																		22
prev vinyl		62
prev wall	-23				14				-22		18
prev wall new				-10							22
prev wall on					18				-21		13
prev want				17		27
prev want on				18		29
prev washer				15
prev water	-37
prev way		69																		21
prev way length		57
prev way on																				21
prev went	-41
prev wet		35										31
prev wide	22	-26		19								43
prev wide length		-26
prev window	12			59
prev wire		48
prev wrapped		-32
prev wrapped length		-20
prev x	-61			-54															42
prev x on				-57		17
prev2 air									18	21
prev2 attic																					30
prev2 base					47
prev2 basement						36									-20							21
prev2 bath									-30
prev2 bathroom				38
prev2 board				30
prev2 bolted									16
prev2 bottom						24				36
prev2 bracket						23
prev2 breaker													22	16
prev2 bring										13
prev2 ceiling																				25
prev2 closet				-11											24
prev2 corner				26
prev2 cut				-21		14						26
prev2 day												11
prev2 dead				-39		-28			42
prev2 deep				36
prev2 door				-19
prev2 drain						-15									30
prev2 drop				-14											-36
prev2 dry				18
prev2 dryer													47
prev2 end				-11
prev2 finish				40					-27	38	-28
prev2 first				-16					-21	31			35
prev2 flat				-69																59
prev2 floor						-27			-29			29
prev2 found									22									27
prev2 front				-20
prev2 gap				50
prev2 garage												-25		37
prev2 garden						20
prev2 get				22
prev2 glass						10
prev2 going				-9		21
prev2 gone						-35										37
prev2 hall				-27																	32
prev2 hang				23
prev2 hard				19
prev2 high				-44					12
prev2 hole				-30
prev2 hose				77
prev2 hot				-26					18
prev2 house						-25			27
prev2 hung				37		21
prev2 island				43
prev2 joist						32
prev2 kitchen																28
prev2 landing				41
prev2 last				-12		-18						21				39
prev2 leak									26
prev2 leave				-19														36
prev2 level				-18
prev2 long						-15
prev2 loose				-29
prev2 master				-20
prev2 me				35
prev2 measured																				-25
prev2 microwave													45
prev2 middle														38
prev2 missing				-26		-14
prev2 more				-15									30					31
prev2 nail				-14
prev2 need				-17					20
prev2 number				25
prev2 oak				38								28
prev2 old				54		23
prev2 opening				28
prev2 other												-23
prev2 p									-16	34	-28		24
prev2 packed				36														36
prev2 painted						33
prev2 panel				22									31
prev2 pipe																43
prev2 plumber				41		-20				40					27
prev2 post						30
prev2 pulled				16					-21	33								22
prev2 put															23
prev2 radiator				40
prev2 replaced				-24					28				-21
prev2 return				-28											25						42
prev2 rise				27		-20		43
prev2 room						-17
prev2 salon											42
prev2 sand				53
prev2 says				53
prev2 screen				43					21
prev2 screw				38		19
prev2 scribed						51
prev2 second				-21		-21	27
prev2 see				31
prev2 short															41							-42
prev2 side				23
prev2 sits						28
prev2 sitting												12					38
prev2 slab												28			26
prev2 stair				-16		53
prev2 step								38
prev2 stud				34
prev2 swapped				-15					26
prev2 tell													32
prev2 thing				41
prev2 tile						-35
prev2 time									-23				33			45
prev2 took				-22
prev2 top																	33
prev2 tread						39						23
prev2 trip														30
prev2 truck				19
prev2 valve				23					46						26
prev2 wait				61
prev2 wall												21
prev2 want				21															28
prev2 water				-21		29
prev2 went				-23					26
prev2 wet												71
prev2 window				-64
prev2 x				-18		22
read earlier %			37
read earlier V			20
read earlier cfm			56
read earlier in wc			-38
read earlier lb			43
read last			36
read last %			31
read last 0			70
read last 0 V			37
read last 0 ft			38
read last 0 ohm			47
read last 0 psi			8
read last 1			68
read last 1 %			40
read last 1 A			44
read last 1 F			32
read last 1 V			51
read last 1 in			29
read last 1 lb			39
read last 1 m			8
read last 1 mm			56
read last 1 ohm			43
read last 1 psi			30
read last 1 sq ft			65
read last 1. in			41
read last 1. mm			-31
read last 2			18
read last 2 %			31
read last 2 F			15
read last 2 mm			-25
read last 2 psi			57
read last 2. in			39
read last 3 F			52
read last 3. F			17
read last 3. V			-20
read last 3. mm			12
read last 3. psi			29
read last A			20
read last F			39
read last V			34
read last bar			30
read last bare 0			88
read last bare 0 V			35
read last bare 1			86
read last bare 1 F			45
read last bare 1 mm			57
read last bare 1. in			37
read last bare 2			79
read last bare 2 F			15
read last bare 2 in			92
read last bare 3 in			-22
read last bare 3 mm			23
read last cfm			46
read last in wc			28
read last lb			13
read last lux			116
read last mm			23
read last ohm			59
read last psi			61
read last said 0			55
read last said 0 ft			48
read last said 1			59
read last said 1 %			44
read last said 1 A			19
read last said 1 V			19
read last said 1 cfm			8
read last said 1 in			28
read last said 1 lb			39
read last said 1 m			8
read last said 1 mm			37
read last said 1 sq ft			65
read last said 1. in			30
read last said 1. mm			-21
read last said 2 in			-31
read last said 2 mm			-25
read last said 2 psi			48
read last said 3. ft			-25
read last said 3. mm			20
read last said 3. psi			19
read last same noun			31
read last same noun ft			55
read last sq ft			36
read last subject area 2			-26
read last subject fixture 0			29
read last subject fixture 2			17
read last subject material 0			22
read last subject material 0 mm			-39
read last subject material 1			44
read last subject material 1 in			48
read last subject none 0			34
read last subject none 0 ft			38
read last subject none 1			91
read last subject none 1 %			20
read last subject none 1 F			22
read last subject none 1 V			42
read last subject none 1 mm			46
read last subject none 2 F			48
read last subject none 2 psi			97
read last subject own 0			76
read last subject own 1			30
read last subject own 1 in			26
read last subject own 1 mm			36
read last subject own 2 mm			46
read last subject person 0			71
read last subject person 0 ft			-19
read last subject person 0 in			-13
read last subject person 0 mm			49
read last subject person 1			56
read last subject person 1 F			44
read last subject person 1 in			36
read last subject pointer 0			25
read last subject pointer 0 ft			32
read last subject pointer 2 mm			-19
read last subject surface 0			28
read last subject surface 2 in			46
read last subject surface 2 mm			28
read last subject tells 0			55
read last subject tells 1			72
read last subject tells 1 A			10
read last subject tells 1 in			29
read last subject tells 2			-18
read last uF			20
read last w-1 # in			-33
read last w-1 # sq ft			35
read last w-1 a in			-18
read last w-1 all			-33
read last w-1 all in			-18
read last w-1 and			37
read last w-1 are			63
read last w-1 at			26
read last w-1 at in			59
read last w-1 be			66
read last w-1 be in			58
read last w-1 by ft			46
read last w-1 by in			-22
read last w-1 for			32
read last w-1 got ft			-22
read last w-1 got in			22
read last w-1 have			34
read last w-1 have in			32
read last w-1 is			35
read last w-1 is mm			54
read last w-1 it			-36
read last w-1 it's			-12
read last w-1 needs			70
read last w-1 needs in			47
read last w-1 not			-33
read last w-1 of			-21
read last w-1 of in			-18
read last w-1 on			-17
read last w-1 on in			-16
read last w-1 only			62
read last w-1 other			-14
read last w-1 other in			-12
read last w-1 out			24
read last w-1 says			48
read last w-1 says F			25
read last w-1 says in			46
read last w-1 the			-17
read last w-1 to			117
read last w-1 to in			48
read last w-1 to psi			83
read last w-1 under			72
read last w-1 under %			44
read last w-1 want			61
read last w-1 wants			107
read last w-1 wants in			59
read last w-1 was			64
read of same noun			24
read of same noun ft			55
s # COP	-21
s # PREP		35
s # Vworkb		31
s # tarea	-34
s # tdefect	-22
s # tfixture	-25
s # tmaterial	-25
s # tsurface	-31
s # w		-10
s CONJ w	23	21
s CONJ w length		21
s COP #	11
s COP PREP		19
s DET #	-23
s DET PREP	-40	-43
s DET PREP length		-44
s DET tfixture	-16
s DET tpart	-14
s DET tsurface		26
s DET tsurface length		26
s DET w	-17	22
s DET w length		25
s M- #	-27
s NEG #	-48
s PREP # angle		-11
s PREP # area		20
s PREP # other		30
s PREP CONJ length		10
s PREP Vworks	-15
s PREP tmaterial	-26
s PREP tpart	-14
s PREP tsurfaceVworkb	-16
s PREP w		-14
s PREP w length		-20
s PRON #	-27
s PRON # length		61
s PRON PREP length		61
s PRON tdefect		32
s PRON tdefect length		32
s Q0 #	-32
s Q0 w	23
s Vhaveb #	16
s Vhavepp #	-32
s Vmeasurei #	43
s Vmeasurei PREP		19
s Vmeasures #		19
s Vmeasures w		20
s Vneedb #	-23
s Vneeds PREP		21
s Votherb #	21	16
s Votherb # length		20
s Votherb PREP	36
s Votherp PREP	27
s Votherp w	-40
s Vsayb #		23
s Vsays #		22
s Vsays PREP	-15
s Vworkb #	-48	25
s Vworkb # length		21
s Vworkb PREP	34	71
s Vworkb PREP length		71
s Vworkb w	-58
s Vworkbpp #	11	28
s Vworkbpp # length		28
s Vworkbpp PREP		-7
s Vworkbpp w		16
s Vworkbpp w length		16
s Vworki #		52
s Vworkpp #	-35
s Vworkpp PREP	-26
s Vworkpp w		34
s Vworkpp w length		34
s tarea #	-20	44
s tarea # length		46
s tdefect #		48
s tdefect # length		43
s tdefect PREP		29
s tdefect PREP length		29
s tdefectVotheri PREP		57
s tfixture #		33
s tfixture # length		33
s tfixture w		15
s tfixture w length		15
s tmaterial #	-45	-28
s tmaterial # length		-28
s tmaterial PREP length		55
s tmaterial w		89
s tmaterial w length		71
s tpart # length		-32
s tpart PREP		21
s tpart PREP length		21
s tpart w		35
s tpart w length		35
s tpartVworks PREP		43
s tsurface #	16
s tsurface PREP		32
s tsurface PREP length		32
s tsurface w		-23
s tsurface w length		-40
s tsurface's #	39
s tsurfaceVworkb #		29
s tsurfaceVworkb # length		29
s tsurfaceVworki #		34
s w #	-32
s w # length		32
s w # temperature		-27
s w CONJ		-29
s w CONJ length		-29
s w PREP length		29
s w tdefect	-17
s w tpart	-20
s w w	-22
s w's PREP		42
s w's PREP length		42
s wly #	16	29
s wly # length		29
s wly PREP		-23
s wly PREP length		-23
s wly w		31
s wly w length		31
s+1 # <0.1 length		33
s+1 # <0.6	-32
s+1 # <1		-14
s+1 # <1 length		-21
s+1 # <100	-50	69
s+1 # <100 length		72
s+1 # <1000		48
s+1 # <115	-26	37
s+1 # <130	-49
s+1 # <160	21	47
s+1 # <2	-61
s+1 # <20		13
s+1 # <200		51
s+1 # <26	-40
s+1 # <26 percent		45
s+1 # <260	23	33
s+1 # <3	-27	-15
s+1 # <3 length		-9
s+1 # <3000	-33
s+1 # <32	22
s+1 # <32 length		39
s+1 # <40		45
s+1 # <400		41
s+1 # <50	-34	13
s+1 # <600	22
s+1 # <72	7	59
s+1 # <72 length		28
s+1 # <8	-38
s+1 # <85		-16
s+1 # decimal		33
s+1 # decimal length		18
s+1 # pressure		32
s+1 # volume		-17
s+1 CONJ <0.6		-42
s+1 CONJ <0.6 length		-51
s+1 CONJ <12		-37
s+1 CONJ <12 length		-37
s+1 CONJ <40		33
s+1 CONJ <40 length		33
s+1 CONJ <50		63
s+1 CONJ fine		37
s+1 CONJ fine length		36
s+1 COP	-25
s+1 COP <3	-25
s+1 COP whole	-25
s+1 DET	-21
s+1 DET <0.6		45
s+1 DET <0.6 length		48
s+1 DET <8		-16
s+1 DET <8 length		32
s+1 DET whole	-39
s+1 M-	-29
s+1 M- whole	-29
s+1 MOD	-28
s+1 MOD whole	-28
s+1 NEG length		-67
s+1 NEG whole		72
s+1 PREP <0.1 length		-17
s+1 PREP <100		-18
s+1 PREP <100 length		-31
s+1 PREP <1000	35
s+1 PREP <115		46
s+1 PREP <12		24
s+1 PREP <16		48
s+1 PREP <16 length		27
s+1 PREP <160		30
s+1 PREP <160 length		32
s+1 PREP <2	-51
s+1 PREP <2 length		41
s+1 PREP <20		55
s+1 PREP <26	31
s+1 PREP <26 length		20
s+1 PREP <260		-53
s+1 PREP <3	-32
s+1 PREP <32	33
s+1 PREP <32 length		-10
s+1 PREP <40	48	39
s+1 PREP <40 length		39
s+1 PREP <5	-24	36
s+1 PREP <5 length		40
s+1 PREP <50	51
s+1 PREP <60		29
s+1 PREP <60 length		25
s+1 PREP <600	22
s+1 PREP <72	36
s+1 PREP <72 length		-15
s+1 PREP <8	-42	35
s+1 PREP <8 length		40
s+1 PREP <85		-49
s+1 PREP decimal		24
s+1 PREP decimal voltage		19
s+1 PREP quarter		47
s+1 PREP quarter length		51
s+1 PREP temperature		31
s+1 PREP weight		20
s+1 PREP whole temperature		31
s+1 PREP whole voltage		-46
s+1 PREP whole weight		20
s+1 PRON		56
s+1 PRON whole		55
s+1 Q0	-30
s+1 Q0 whole	-30
s+1 Qlength	43
s+1 Qlength whole	43
s+1 Qpack		12
s+1 SUB		32
s+1 SUB length		20
s+1 SUB whole length		-21
s+1 Ton		-37
s+1 Vmovepp whole		42
s+1 Votherp		-25
s+1 Votherp length		-25
s+1 Vworkb	-36
s+1 Vworkb <5		36
s+1 Vworkb <5 length		36
s+1 Vworkb <8		-40
s+1 Vworkb whole	-36	-27
s+1 Vworks	-39
s+1 Vworks <5	-20
s+1 Vworks whole	-39
s+1 tarea <5	18
s+1 tdefect	-34	38
s+1 tdefect <0.6		37
s+1 tdefect <0.6 length		37
s+1 tdefect <2	-45
s+1 tdefect <3		32
s+1 tdefect <3 length		22
s+1 tdefect <5		25
s+1 tdefect <5 length		20
s+1 tdefect fine		29
s+1 tdefect fine length		29
s+1 tdefect length		36
s+1 tdefect quarter		30
s+1 tdefect quarter length		30
s+1 tdefect whole	-48	46
s+1 tdefect whole length		44
s+1 tdefectVotherpp	-28
s+1 tdefectVotherpp whole	-28
s+1 tdefectVworkpp	-29
s+1 tdefectVworkpp whole	-29
s+1 tfinish	-52	-27
s+1 tfinish length		-40
s+1 tfinish whole	-52	-35
s+1 tfinish whole length		-56
s+1 tfixture	-25
s+1 tfixture whole	-26
s+1 tmaterial	-30	-43
s+1 tmaterial <12	-18
s+1 tmaterial <16	-47
s+1 tmaterial <2	-25
s+1 tmaterial <5	-19
s+1 tmaterial <8	-16
s+1 tmaterial length		-43
s+1 tmaterial whole	-30
s+1 tmaterialVworkb	-27
s+1 tmaterialVworkb whole	-27
s+1 tmaterialVworks	-24
s+1 tmaterialVworks <3	-18
s+1 tmaterialVworks whole	-24
s+1 tpart	-26	-53
s+1 tpart <26	-19
s+1 tpart <3	-20
s+1 tpart <5	-18
s+1 tpart <8	-19
s+1 tpart whole	-26
s+1 tpartVworkb	-43
s+1 tpartVworkb whole	-43
s+1 tpartVworks	-30
s+1 tpartVworks whole	-30
s+1 tsurface	-24	24
s+1 tsurface <0.6		51
s+1 tsurface <0.6 length		51
s+1 tsurface <2	-27
s+1 tsurface <3	-19
s+1 tsurface <5	-23	-18
s+1 tsurface <5 length		-18
s+1 tsurface <8	-36
s+1 tsurface fine		35
s+1 tsurface fine length		35
s+1 tsurface length		31
s+1 tsurface whole	-24
s+1 tsurfaceVotherb		28
s+1 tsurfaceVotherb <0.6		23
s+1 tsurfaceVotherb <0.6 length		23
s+1 tsurfaceVotherb length		28
s+1 tsurfaceVworkb	-24
s+1 tsurfaceVworkb <2	-23
s+1 tsurfaceVworkb whole	-24
s+1 tsurfaceVworks	-20
s+1 tsurfaceVworks <5	-20
s+1 tsurfaceVworks whole	-20
s+1 ttool		-23
s+1 ttool whole		-23
s+1 w <0.1		46
s+1 w <0.1 length		46
s+1 w <0.6		28
s+1 w <0.6 length		28
s+1 w <115	12
s+1 w <12	-22	23
s+1 w <12 length		22
s+1 w <130	21
s+1 w <16	-29	41
s+1 w <2	-36	-8
s+1 w <2 length		-11
s+1 w <20	58
s+1 w <26		34
s+1 w <26 length		27
s+1 w <260		33
s+1 w <3	-45	47
s+1 w <3 length		49
s+1 w <32	23	68
s+1 w <32 length		43
s+1 w <40	-39	-12
s+1 w <40 length		-12
s+1 w <400	28
s+1 w <5	-60	-25
s+1 w <5 length		-9
s+1 w <50	40	-24
s+1 w <50 length		21
s+1 w <60		25
s+1 w <600	13
s+1 w <72	13
s+1 w <8		7
s+1 w <85		81
s+1 w <85 length		63
s+1 w voltage		13
s+1 w whole voltage		13
s+2 # # pressure		32
s+2 # # volume		-17
s+2 CONJ #		-33
s+2 CONJ # length		-33
s+2 CONJ Q0	-49	-26
s+2 CONJ Q0 length		17
s+2 CONJ SUB		37
s+2 CONJ SUB length		19
s+2 DET #		65
s+2 DET # length		66
s+2 DET w	-28	26
s+2 DET w length		54
s+2 M- Q0	-29
s+2 PREP # length		35
s+2 PREP DET		32
s+2 PREP DET percent		22
s+2 PREP OPR	-45
s+2 PREP PREP		58
s+2 PREP PREP length		57
s+2 PREP PRON	27
s+2 PREP PRON length		-10
s+2 PREP Q0		26
s+2 PREP Q0 length		36
s+2 PREP Qlength		-11
s+2 PREP Qlength length		-8
s+2 PREP Qtime		27
s+2 PREP SUB length		43
s+2 PREP Vmoveb	-49
s+2 PREP Vworkb		28
s+2 PREP Vworkb length		24
s+2 PREP tmaterial		47
s+2 PREP tmaterial length		59
s+2 PREP tmaterialVworkb		64
s+2 PREP tmaterialVworkb length		64
s+2 PREP w	-41
s+2 PREP w voltage		12
s+2 Q0 #	-28
s+2 SUB DET	-33	64
s+2 Vmovepp PREP		-14
s+2 Vworkb #		-66
s+2 Vworkb # length		-56
s+2 Vworkb PREP		32
s+2 Vworkb PREP length		41
s+2 Vworkb SUB		28
s+2 Vworkb SUB length		28
s+2 Vworkpp #		-21
s+2 Vworkpp # length		12
s+2 Vworks #	-36
s+2 tarea #	-31
s+2 tdefect #		50
s+2 tdefect # length		48
s+2 tdefect PREP	-40
s+2 tfinish #	-50	-42
s+2 tfinish # length		-61
s+2 tfixture #	-24
s+2 tmaterial #	-37
s+2 tmaterial PREP	-29
s+2 tmaterial w	-21
s+2 tmaterialVworkb #	-35
s+2 tmaterialVworks #	-17
s+2 tmaterialVworks PREP	-17
s+2 tpart #	-28
s+2 tpart PREP	-18
s+2 tsurface #	-27	25
s+2 tsurface PREP	-15	41
s+2 tsurface PREP length		48
s+2 tsurface w	-20
s+2 w # length		38
s+2 w # pressure		-9
s+2 w CONJ		29
s+2 w CONJ length		30
s+2 w DET	30	-16
s+2 w DET length		-16
s+2 w PREP	-40	41
s+2 w PREP length		41
s+2 w Q0		-31
s+2 w Qlength		-7
s+2 w Qlength length		-7
s+2 w SUB		52
s+2 w SUB length		52
s+2 w Vworkpp	-24
s+2 w w	-41
s-1 # current		-21
s-1 # percent		25
s-1 # weight		-35
s-1 CONJ	-27
s-1 DET	-26	-20
s-1 HAVE	-30
s-1 M(		-60
s-1 M( length		-52
s-1 M+	-24
s-1 M-	-34
s-1 NEG	-51	-59
s-1 NEG length		-38
s-1 OPR	-51
s-1 PREP angle		-36
s-1 PREP percent		50
s-1 PREP pressure		37
s-1 PREP weight		47
s-1 Q0	-20	-25
s-1 Q0 length		-25
s-1 Qlength	-20
s-1 Qpack	-18
s-1 SUB	-44	-15
s-1 SUB length		-21
s-1 Ton	-26
s-1 Ton length		40
s-1 Vhaveb	-16
s-1 Vhavepp	-27
s-1 Vmeasureb		47
s-1 Vmeasureb length		36
s-1 Vmeasurebpp	33	42
s-1 Vmeasurei	52
s-1 Vmeasurei length		23
s-1 Vmeasurepp		23
s-1 Vmeasures	56	31
s-1 Vneedb	-27	-25
s-1 Vneedb length		-15
s-1 Votherb	21
s-1 Vothers		55
s-1 Vsayb	-27	27
s-1 Vsaypp	24
s-1 Vsays		23
s-1 Vsays length		14
s-1 Vworkb	-23	-21
s-1 Vworkb length		-25
s-1 Vworkbp		23
s-1 Vworkbp length		23
s-1 Vworkbpp		-16
s-1 Vworkbpp length		-20
s-1 Vworki	46	54
s-1 Vworkpp	-33
s-1 tarea	-36
s-1 tdefect	-32	42
s-1 tdefect length		42
s-1 tdefectVotherb		61
s-1 tdefectVotherb length		59
s-1 tdefectVotheri		57
s-1 tdefectVotherpp		56
s-1 tdefectVotherpp length		56
s-1 tdefectVothers		36
s-1 tdefectVothers length		36
s-1 tdefectVworkpp		55
s-1 tdefectVworkpp length		55
s-1 tfinish	-27	-87
s-1 tfixture		31
s-1 tfixture length		40
s-1 tmaterial	-40	-26
s-1 tmaterial length		-19
s-1 tmaterial's	31	-15
s-1 tmaterial's length		-15
s-1 tmaterialVworkb	-64
s-1 tpart	-62	-14
s-1 tpart length		-40
s-1 tpart's		53
s-1 tpart's length		53
s-1 tpartVworks		81
s-1 tsurface		38
s-1 tsurface's	48
s-1 tsurfaceVotherb		32
s-1 tsurfaceVotherb length		32
s-1 tsurfaceVworkb	22	46
s-1 tsurfaceVworkb length		43
s-1 tsurfaceVworki		65
s-1 w	-26
s-1 w area		31
s-1 w pressure		32
s-1 w temperature		-25
s-1 w voltage		-48
s-1 w's	33
s-1 wly	23	25
s-1 wly length		25
s-2 # # current		-21
s-2 # # percent		25
s-2 # # weight		-35
s-2 # DET	-22	-60
s-2 # DET length		-47
s-2 # PREP		43
s-2 # PRON	-24
s-2 # Vneeds	29	62
s-2 # Vneeds length		38
s-2 # Votherb		-32
s-2 # Votherb length		-37
s-2 # Votherp		29
s-2 # Vworkb		40
s-2 # Vworkb length		40
s-2 # Vworkbpp		-11
s-2 # Vworkbpp length		-28
s-2 # tfixture	35
s-2 # tfixture length		20
s-2 # tmaterial	-70	-34
s-2 # tpart	-28	-12
s-2 # tpart length		-21
s-2 # tsurface	6
s-2 # tsurface's		71
s-2 # w	9
s-2 # w length		70
s-2 CONJ DET	-30
s-2 COP DET	23
s-2 COP PREP	49
s-2 COP PREP length		46
s-2 COP Vworkpp		62
s-2 COP Vworkpp length		60
s-2 COP tdefect		20
s-2 COP tdefect length		20
s-2 COP w		28
s-2 COP w length		28
s-2 COP wly		27
s-2 COP wly length		27
s-2 DET tarea length		-18
s-2 DET tfixture		23
s-2 DET tfixture length		23
s-2 DET tmaterial	21	66
s-2 DET tmaterial length		65
s-2 DET tpart		59
s-2 DET tpart length		52
s-2 DET tsurface		27
s-2 DET tsurface length		27
s-2 DET w	-28
s-2 DET w's	-38	-38
s-2 DET w's length		-38
s-2 PREP DET	-26	-40
s-2 PREP DET length		-43
s-2 PREP Votherb	-26
s-2 PREP Vworkb	-40	23
s-2 PREP Vworkb length		23
s-2 PREP tmaterial		-58
s-2 PREP tmaterial length		-46
s-2 PREP tsurface		-18
s-2 PREP tsurface length		-18
s-2 PREP w	-39	-45
s-2 PREP w length		-30
s-2 PRON COP	-47
s-2 PRON DET	-34	-27
s-2 PRON DET length		-24
s-2 PRON PREP	-27
s-2 PRON PREP length		47
s-2 PRON Vhavepp	-29
s-2 PRON Vmeasurei		27
s-2 PRON Vneedb		-21
s-2 PRON Votherb		44
s-2 PRON Votherb length		44
s-2 PRON Votherp		-17
s-2 PRON Votherp length		-35
s-2 PRON Vworkpp	-40	-99
s-2 PRON w		68
s-2 PRON w length		68
s-2 Q0 CONJ	-61
s-2 Q0 M-	-28
s-2 Q0 PREP	-39	-22
s-2 Q0 PREP length		-22
s-2 Q0 w	-23
s-2 Qlength PREP		-36
s-2 Qlength PREP length		-44
s-2 Qlength w		26
s-2 Qlength w length		26
s-2 Ton PREP	-55
s-2 Vmeasurei PREP		26
s-2 Vmeasurep PREP		29
s-2 Vmeasurep PREP length		25
s-2 Votherb PREP	21	35
s-2 Votherb PREP length		26
s-2 Votherp DET		49
s-2 Votherp DET length		49
s-2 Votherp PREP		-20
s-2 Votherp PREP length		-20
s-2 Vworkb COP		49
s-2 Vworkb PREP	-43
s-2 Vworkb PREP length		-21
s-2 Vworkb PRON	-35
s-2 Vworkbpp PREP	90	63
s-2 Vworkbpp PREP length		63
s-2 Vworki PREP		73
s-2 Vworkpp DET	-17	30
s-2 Vworkpp DET length		30
s-2 Vworkpp PREP	-36
s-2 Vworkpp PRON		24
s-2 Vworkpp PRON length		21
s-2 Vworks PREP	-29	-47
s-2 tarea PREP		-54
s-2 tarea PREP length		-47
s-2 tdefect PREP	-43	48
s-2 tdefect PREP length		47
s-2 tdefect w		47
s-2 tdefect w length		47
s-2 tdefectVotherb PREP		28
s-2 tdefectVotherb PREP length		28
s-2 tdefectVothers PREP		27
s-2 tdefectVworkpp PREP	-41	30
s-2 tdefectVworkpp PREP length		31
s-2 tdefectVworks PREP		33
s-2 tdefectVworks PREP length		33
s-2 tfinish PREP		52
s-2 tfinish PREP length		55
s-2 tfixture COP	-35
s-2 tfixture PREP	-47	21
s-2 tfixture PREP length		21
s-2 tfixture Votherp		-31
s-2 tmaterial COP length		43
s-2 tmaterial PREP	-32
s-2 tmaterial Vmeasures		23
s-2 tmaterial w		29
s-2 tmaterial w length		29
s-2 tmaterial's PREP		35
s-2 tpart COP	14
s-2 tpart PREP	32
s-2 tpart w	-45
s-2 trole Vneeds	23
s-2 tsurface COP		40
s-2 tsurface COP length		37
s-2 tsurface PREP		66
s-2 tsurface PREP length		68
s-2 tsurface w		46
s-2 tsurfaceVotherb PREP		22
s-2 tsurfaceVotherb PREP length		22
s-2 w CONJ	12	-24
s-2 w CONJ length		-24
s-2 w COP		37
s-2 w COP length		27
s-2 w DET	-43
s-2 w Vmeasures		46
s-2 w Vneeds	61
s-2 w Votherp		23
s-2 w Vsays	-26
s-2 w tmaterial		32
s-2 w tmaterial length		32
s-2 w tsurface length		-21
s-2 w w	-59	31
said last			24
said last %			32
said last V			18
said last cfm			30
said last cm			61
said last deg			-25
said last gal			-16
said last ohm			58
said last psi			29
said last sq ft			37
said last sq m			61
said next F			-48
said next mm			22
said next sq ft			65
says copula ahead	-17	-41
says copula ahead length		-25
says copula ahead whole	-17
says copula ahead whole length		25
says copula area whole		26
says copula behind angle		24
says copula behind decimal	39	31
says copula behind decimal length		29
says copula behind percent		34
says copula behind pressure		-22
says copula behind temperature		28
says copula behind whole angle		25
says copula behind whole percent		34
says copula behind whole temperature		28
says copula fixture fine		-14
says copula fixture fine length		-14
says copula fixture half		43
says copula fixture half length		43
says copula fixture quarter		-7
says copula fixture quarter length		-7
says copula material quarter		-8
says copula material quarter length		-8
says copula material whole		32
says copula material whole length		25
says copula own fine		21
says copula own fine length		21
says copula own half		39
says copula own half length		39
says copula own whole length		26
says copula part fine		38
says copula part fine length		38
says copula part quarter		29
says copula part quarter length		29
says copula part whole	-26
says copula person fine		52
says copula person fine length		52
says copula person quarter		46
says copula person quarter length		46
says copula person whole	-72
says copula pointer decimal	66
says imperative behind	-14
says imperative behind whole	-17	-18
says imperative none whole	-17	-18
says modal ahead	-46	-24
says modal ahead whole	-46	-31
says modal behind	-21
says modal behind whole	-15
says modal behind whole length		25
says modal none whole	-18
says modal person quarter		-18
says modal person quarter length		-18
says modal person whole	-16	-24
says none behind area		20
says none behind decimal	16
says none behind decimal current		35
says none behind decimal length		-9
says none behind decimal voltage		24
says none behind flow		28
says none behind other		33
says none behind temperature		27
says none behind whole area		15
says none behind whole temperature		27
says none behind whole weight		-28
says none none decimal	16
says none none decimal current		35
says none none decimal length		-9
says none none decimal voltage		24
says none none whole area		15
says none none whole temperature		27
says none none whole weight		-28
says owed behind	-8
says owed behind quarter		22
says owed behind quarter length		22
says owed behind whole	-11
says owed fixture fine		26
says owed fixture fine length		26
says owed material whole		43
says owed none whole	-25
says owed person half length		-36
says owed person whole		9
says owed person whole length		20
says owed pointer whole	-40	-14
says owed pointer whole length		-14
says past ahead	-15	-49
says past ahead length		-49
says past ahead whole	-15	-37
says past ahead whole length		-31
says past area whole		31
says past behind	-17
says past behind fine		34
says past behind fine length		35
says past behind other		26
says past behind percent		29
says past behind pressure		39
says past behind volume		-26
says past behind weight		7
says past behind whole	-16
says past behind whole other		26
says past behind whole percent		29
says past behind whole pressure		40
says past behind whole volume		-10
says past behind whole weight		7
says past material half		36
says past material half length		36
says past material whole	-32	-20
says past material whole length		-24
says past none fine		29
says past none fine length		29
says past none half length		28
says past none quarter		-48
says past none quarter length		-51
says past none whole	-15
says past own whole	-37
says past own whole length		25
says past part whole	-51	40
says past part whole length		51
says past person half		-18
says past person whole area		23
says past person whole length		-44
says past person whole weight		12
says past pointer whole	20	39
says past pointer whole length		33
says past surface fine		29
says past surface fine length		29
says past surface whole		29
says past surface whole length		27
says past tells whole	-31
says present ahead	-20	-33
says present ahead length		-33
says present ahead whole	-20	-37
says present ahead whole length		-37
says present behind	-11
says present behind area		-25
says present behind decimal	-30	35
says present behind fine		47
says present behind fine length		48
says present behind half		-12
says present behind half length		-12
says present behind other		-26
says present behind percent		37
says present behind quarter		31
says present behind quarter length		32
says present behind volume		-27
says present behind weight		21
says present behind whole	-11
says present behind whole area		-28
says present behind whole other		-37
says present behind whole percent		34
says present behind whole weight		21
says present material fine		25
says present material fine length		25
says present material whole		65
says present material whole length		59
says present own whole	-18
says present own whole length		-27
says present part whole		45
says present part whole length		34
says present person whole	-23	-11
says present pointer half		-20
says present pointer half length		-20
says present pointer whole	-24
says present pointer whole length		-13
says present surface whole	-22	-25
says present surface whole length		-46
says present tool whole		-31
size <0.1	-58								-16						-35		35	17
size <0.1 fine		30
size <0.1 fine length		31
size <0.1 length		31
size <0.1 one									-16						-35		35	17
size <0.1 whole	-61								-15						-35		38
size <0.6	-63			37					-17
size <0.6 decimal	-63			37					-17
size <0.6 one				37					-17
size <0.6 quarter		-11
size <0.6 quarter length		-17
size <0.6 quarter slope		21
size <0.6 slope		28
size <1				-12														87
size <1 decimal				-12														87
size <1 one				-12														87
size <1 quarter		-20
size <1 quarter length		-17
size <100									37		22									17
size <100 length		-7
size <100 one				-11		35			37		22									17
size <100 whole		31							44		14									17
size <1000						68
size <1000 length		-27
size <1000 one						47
size <1000 pair2				-28		43
size <1000 whole						68
size <1000 whole length		-27
size <115	-30								39
size <115 length		-20
size <115 one									40						35
size <115 whole	-30								39
size <12	-21
size <12 area		-19
size <12 decimal	47	63						-18				28	25	60				-35			-21
size <12 half		-44
size <12 half length		-47
size <12 pair2				34
size <12 percent		35
size <12 quarter		34
size <12 quarter length		34
size <12 weight		33
size <12 whole	-27
size <12 whole area		-25
size <12 whole percent		27
size <130		58							51				53
size <130 length		-27
size <130 one									52				54
size <130 voltage		78
size <130 whole		51							58				36
size <130 whole length		-39
size <16 area		-21
size <16 decimal	40																		92
size <16 half		-33
size <16 half length		-33
size <16 one				32
size <16 pair1				-24
size <16 pair2					-16
size <16 whole	-34			30
size <16 whole area		-21
size <160		22				20			60
size <160 one						30			60
size <160 whole		21				20			60
size <2	-37
size <2 area		-31
size <2 half		-35
size <2 half length		-38
size <2 volume		-21
size <2 whole	-39
size <20	9			40								19
size <20 one				30								21
size <20 pair2				48
size <20 whole				43								20
size <200	20	61				65
size <200 one						65
size <200 whole	20	41				65
size <26	-35			27
size <26 fine		-8
size <26 fine length		-8
size <26 half		53
size <26 half length		53
size <26 one				59
size <26 pair2				-23
size <26 percent		41
size <26 whole		-12		30
size <26 whole length		-12
size <26 whole percent		41
size <260	20			-16		33							57							19
size <260 length		23
size <260 one				-16		33							57							19
size <260 whole	20			-17		34							48							20
size <260 whole length		23
size <3	-36
size <3 decimal	-11					-46		84
size <3 half		-33
size <3 half length		-33
size <3 quarter		33
size <3 quarter length		33
size <3 whole	-37
size <3000		46				73
size <3000 one						50
size <3000 pair2						68
size <3000 whole		46				73
size <32				35								18									26
size <32 fine		44
size <32 fine length		44
size <32 half		26
size <32 half length		26
size <32 length		33
size <32 one												19									27
size <32 pair2				30		-11
size <32 percent		33
size <32 whole				40								19
size <32 whole percent		33
size <40				37
size <40 fine		37
size <40 fine length		37
size <40 half		65
size <40 half length		65
size <40 one				35
size <40 pair2				41
size <40 quarter		62
size <40 quarter length		62
size <40 whole				37
size <40 whole length		-16
size <400	8	31				37											28
size <400 length		-25
size <400 one						51											30
size <400 other		23
size <400 whole	8	31				37											28
size <400 whole length		-25
size <400 whole other		23
size <5	-30
size <5 current		-27
size <5 decimal	36												-39		-45			17	-20			29
size <5 decimal length		-11
size <5 fine		-19
size <5 fine length		-19
size <5 half		-32
size <5 half length		-32
size <5 pair1					33
size <5 temperature		-63
size <5 whole	-33
size <5 whole temperature		-63
size <50		21		31
size <50 fine		56
size <50 fine length		56
size <50 length		21
size <50 pair2					38	-20
size <50 whole				29
size <60	27	30		41					53
size <60 half		31
size <60 half length		31
size <60 length		34
size <60 one				35					56
size <60 pressure		24
size <60 quarter		30
size <60 quarter length		30
size <60 whole	27			41					53
size <60 whole pressure		24
size <600	21	33		-17		47									-17							30
size <600 one						30									-17							30
size <600 pair2				-30		52
size <600 whole	21	33		-17		47									-17							30
size <72	23	34		26					38											17
size <72 length		23
size <72 one				27					41											20
size <72 weight		47
size <72 whole	23			26					37											18
size <72 whole weight		47
size <8	-36
size <8 current		20
size <8 decimal	10	34												35	26			19			25
size <8 half		18
size <8 half length		13
size <8 pressure		42
size <8 whole	-37
size <85				27					20
size <85 half		37
size <85 half length		37
size <85 length		41
size <85 one						17	21		21
size <85 whole				27					20
size <85 whole length		26
size huge						47
size huge one						47
size huge whole						47
subject area		39
subject area be behind	26	32
subject area be behind length		22
subject area length		31
subject area null behind	-36	34
subject area null behind length		33
subject fixture #	-21
subject fixture at	37	-27
subject fixture at length		-35
subject fixture be ahead	-28
subject fixture have behind		21
subject fixture have behind length		21
subject fixture null behind	9	-10
subject fixture was		-31
subject material	-18
subject material about		28
subject material about length		28
subject material are		46
subject material are length		46
subject material area		46
subject material at		29
subject material at length		29
subject material be ahead	-27
subject material by		16
subject material by length		16
subject material have behind	-13	25
subject material have behind length		25
subject material is length		37
subject material of	-39
subject material percent		23
subject material the	-18
subject none # angle		-21
subject none # area		20
subject none # flow		35
subject none # other		36
subject none # power		45
subject none # weight		-16
subject none (		-38
subject none +	-24
subject none -	-26
subject none <q>	-70	-70
subject none a length		46
subject none all	-20
subject none and		51
subject none and length		42
subject none angle		-28
subject none area		20
subject none at		35
subject none buy behind		-28
subject none by	-48	-23
subject none by length		-23
subject none come behind		39
subject none cut	-19	20
subject none cut behind	37
subject none cut length		20
subject none falls		19
subject none falls length		19
subject none get behind	21	-20
subject none get behind length		-10
subject none grab behind	-18
subject none hang behind		41
subject none hang behind length		41
subject none have behind		56
subject none have behind length		56
subject none hole		35
subject none hole length		35
subject none in	-26	-49
subject none in length		-41
subject none leave behind		-22
subject none leave behind length		-22
subject none like		20
subject none like length		20
subject none maybe		33
subject none maybe length		29
subject none measure behind		23
subject none need behind	-15	-25
subject none need behind length		-43
subject none of	-29	-27
subject none of length		-37
subject none on	-23
subject none order behind	-28
subject none other		38
subject none out		30
subject none out length		30
subject none over		57
subject none over length		57
subject none prime behind	-32
subject none run		23
subject none run behind		-10
subject none run behind length		-10
subject none run length		23
subject none sand behind	-26
subject none say		37
subject none slope		28
subject none take behind		28
subject none take behind length		28
subject none the		-30
subject none the length		-24
subject none to	15
subject none to length		26
subject none up length		28
subject none use behind		-26
subject none use behind length		-23
subject none volume		-22
subject none want behind	-29	29
subject none want behind length		29
subject none wants		27
subject none wants length		27
subject none with	-24
subject none within		30
subject none within length		30
subject own	-30	18
subject own #		-74
subject own # length		-74
subject own and	-31
subject own at	22	73
subject own at length		66
subject own be ahead		20
subject own be behind		31
subject own be behind length		39
subject own have behind	-6
subject own is	-39	41
subject own is length		24
subject own length		29
subject own null behind		25
subject own to		18
subject part	-26
subject part at	42	60
subject part at length		59
subject part be ahead	-14
subject part be behind		34
subject part be behind length		32
subject part null behind	-39
subject part was		21
subject part was length		21
subject person	-18
subject person <q>	29
subject person a	27	-75
subject person a length		-58
subject person about		27
subject person about length		21
subject person all	-19
subject person area		-28
subject person at length		-32
subject person be behind	-51	-31
subject person be behind length		-38
subject person by	-42	31
subject person by length		31
subject person count behind	-37
subject person do behind	-17
subject person finish behind	-14
subject person get behind		7
subject person go behind	-22
subject person got	-20	47
subject person had	-30
subject person have behind	33	-59
subject person have behind length		-40
subject person in	-18	12
subject person in length		23
subject person is	29
subject person make behind	-31	-23
subject person make behind length		-23
subject person measure behind	64	34
subject person measure behind length		22
subject person move behind		19
subject person move behind length		19
subject person need behind	-39	-41
subject person need behind length		-40
subject person null behind	-59
subject person pick behind	-44
subject person run behind		-31
subject person sand behind	-17
subject person set behind		-26
subject person set behind length		-26
subject person take behind	-35
subject person the	-26	-31
subject person the length		-31
subject person think behind		18
subject person to	44	78
subject person to length		80
subject person up		27
subject person up length		27
subject person volume		-25
subject person want behind	33	17
subject person want behind length		48
subject person wants	24
subject person with		-9
subject pointer #	-19
subject pointer about length		-6
subject pointer all	-19
subject pointer and		25
subject pointer and length		25
subject pointer are		44
subject pointer are length		44
subject pointer at	31	-7
subject pointer at length		-28
subject pointer by		24
subject pointer by length		24
subject pointer good		26
subject pointer good length		26
subject pointer have behind	-18
subject pointer in		67
subject pointer in length		67
subject pointer is	-39	42
subject pointer it's	6
subject pointer like		25
subject pointer like length		27
subject pointer over		41
subject pointer over length		41
subject pointer say behind	34
subject pointer says	-20
subject pointer that's	-21
subject pointer the	-17
subject pointer there's	-25
subject pointer to		26
subject pointer to length		26
subject pointer want behind		59
subject pointer want behind length		59
subject surface #	-30
subject surface about		-31
subject surface about length		-31
subject surface and		-15
subject surface and length		-15
subject surface at	54	-20
subject surface at length		-26
subject surface be ahead	36
subject surface go behind		26
subject surface go behind length		26
subject surface is	67
subject surface null behind	19
subject surface to		35
subject surface to length		36
subject tells #	26
subject tells be behind		34
subject tells be behind length		31
subject tells length		-9
subject tells say behind	-35
subject tells say behind length		-12
subject tells says	-32
subject tool	-19	-7
sw # at		26
sw # deep	25	48
sw # deep length		48
sw # long		49
sw # long length		49
sw # more	-40
sw # of	-25
sw # on length		-21
sw # up		30
sw # up length		30
sw COP #	11
sw COP low		32
sw COP low length		27
sw COP short		47
sw COP short length		47
sw DET #	-23
sw DET hole		30
sw DET hole length		30
sw M- #	-27
sw NEG #	-48
sw PREP # angle		-11
sw PREP # area		20
sw PREP # other		30
sw PREP by		33
sw PREP by length		40
sw PREP centres		-30
sw PREP centres length		-30
sw PREP deep		-61
sw PREP deep length		-61
sw PREP for		31
sw PREP in		26
sw PREP in length		24
sw PREP long		25
sw PREP long length		25
sw PREP of	-23	53
sw PREP of length		56
sw PREP off	41
sw PREP on		26
sw PREP on length		27
sw PREP short		-29
sw PREP short length		-34
sw PREP side	-16
sw PREP the		56
sw PREP to	47	64
sw PREP to length		64
sw PREP wide		39
sw PREP wide length		39
sw PREP with		-27
sw PREP with length		-41
sw PRON #	-27
sw PRON # length		61
sw PRON long		42
sw PRON long length		42
sw PRON of	-17
sw Q0 #	-32
sw Vhaveb #	16
sw Vhavepp #	-32
sw Vmeasurei #	43
sw Vmeasures #		19
sw Vneedb #	-23
sw Votherb #	21	16
sw Votherb # length		20
sw Votherb off		21
sw Votherb off length		28
sw Vsayb #		23
sw Vsays #		22
sw Vsays to	-36
sw Vworkb #	-48	25
sw Vworkb # length		21
sw Vworkbpp #	11	28
sw Vworkbpp # length		28
sw Vworki #		52
sw Vworkpp #	-35
sw tarea #	-20	44
sw tarea # length		46
sw tdefect #		48
sw tdefect # length		43
sw tfixture #		33
sw tfixture # length		33
sw tmaterial #	-45	-28
sw tmaterial # length		-28
sw tpart # length		-32
sw tsurface #	16
sw tsurface's #	39
sw tsurfaceVworkb #		29
sw tsurfaceVworkb # length		29
sw tsurfaceVworki #		34
sw w #	-32
sw w # length		32
sw w # temperature		-27
sw w <q>	68	23
sw w by		42
sw w by length		42
sw w in		-40
sw w in length		-13
sw w long		44
sw w long length		44
sw w of		-30
sw w of length		-30
sw wly #	16	29
sw wly # length		29
system both														28
system both one														29						16
system both whole														29						16
system both+									-40	66
system both+ one									-40	66
system both+ whole				-22					-41	69
system metric						22
system metric <100						72													13
system metric <1000						71
system metric <115									-30		-23
system metric <12						56			-27	42	-28
system metric <16												21
system metric <2						-20
system metric <26										24
system metric <3						-28
system metric <3000						60
system metric <40						60
system metric <400																	57
system metric <5																23
system metric <50										35	29
system metric <600						60
system metric <8											-21					49
system metric decimal						-31		63				-22	-22					-18
system metric one						21
system metric pair1						41
system metric pair2				-29
system metric whole						24
system none <100									61
system none <1000						84
system none <115									49
system none <12												21		22
system none <130									32				70
system none <16				38								26
system none <160						45			23
system none <20									-8				48
system none <200						68
system none <26												47
system none <260						57			24				47
system none <3000						74
system none <32									-17	21	-25										40
system none <40				47		-11			38
system none <400						27			24
system none <50				-33					48
system none <60				30					47
system none <600				-13		64																-22
system none <72				34					42
system none <85									41
system none decimal				-18		-16			-14					38
system none pair2				78
system us <0.1															-38
system us <0.6				48														34
system us <1																		47
system us <100						-15					46				33					22
system us <1000				-32		-58
system us <115									42						43							-44
system us <130				27					53
system us <160									73
system us <20				57					37			30
system us <26				50									29
system us <260				-17		-36							19		-31					37
system us <3000				-11		-61
system us <32				48
system us <40				36
system us <400				-12		30									27							-29
system us <50				54											32
system us <60				45					18
system us <600				-25		-47									-29							66
system us <72				28					44						38					34
system us <8					18
system us <85				28
system us decimal									-22				50					42	29
system us pair1					24
system us pair2				45		-18
topic airflow				31								-17								23		14
topic airflow <8 length		-22
topic airflow <85		30
topic airflow flow		31
topic airflow length		-23
topic airflow none				54										29
topic airflow us									-30			-19								21		25
topic airflow whole				22								-16								29		19
topic angle											49
topic angle <0.6 length		-11
topic angle <16		40
topic angle <16 length		40
topic angle <2	-28
topic angle <3	-47
topic angle <5												33
topic angle metric											18
topic angle none						38
topic angle us											47
topic angle whole											46
topic current														83
topic current <12													29
topic current decimal													19	98
topic current none														35
topic current us												-28		72								-27
topic current whole														29
topic draft																		75				-30
topic draft <26	-56			-20
topic draft <5		-79
topic draft decimal									-33									103
topic draft pressure		35
topic draft us				15					17									49				-35
topic draft whole									29													-36
topic heat									65	24
topic heat <0.6		-8
topic heat <0.6 length		-8
topic heat <1		-21
topic heat <1 length		-21
topic heat <100	55								63										12
topic heat <12		-39		-22						62
topic heat <16		-36
topic heat <16 length		-57
topic heat <160		26
topic heat <2	-79	33							-46
topic heat <2 length		46
topic heat <20	36			-41					77						37			-27	23
topic heat <26				-27						35			62									-23
topic heat <3	-52								-30
topic heat <5	-52	37							-20
topic heat <5 length		28
topic heat <50		41
topic heat <60	25			-18					77
topic heat <72	39	33				-13			35	45
topic heat <8		25
topic heat <85									37
topic heat length		-23
topic heat metric						26			-34	54
topic heat none									105				-17
topic heat other		-21
topic heat pressure		26
topic heat temperature		71
topic heat us				-21					75
topic heat whole									71	26
topic light	-33	54
topic light <2	-25
topic light length		57
topic moisture	-26			-19								95
topic moisture <0.6		36
topic moisture <0.6 length		36
topic moisture <12		-9
topic moisture <12 length		-23
topic moisture <2 length		19
topic moisture <5	-51	26
topic moisture metric						-19						52
topic moisture none												96
topic moisture percent		49
topic moisture us				-22								38
topic moisture whole				-20								85
topic none	-28
topic none <0.1	-65	40
topic none <0.1 length		24
topic none <0.6	-26			44									-17
topic none <0.6 slope		21
topic none <1		-24
topic none <1 length		-28
topic none <100		19		-30					48		12
topic none <1000						58
topic none <115	-31								23		-24
topic none <12	-27
topic none <12 area		-23
topic none <12 current		-39
topic none <130				23		-15			-20				47
topic none <16	-32
topic none <160		32				41
topic none <160 length		10
topic none <2	-31
topic none <20												36
topic none <200		40
topic none <26				25								26
topic none <26 percent		48
topic none <260		34		-15		37							-38				26			31
topic none <3	-31
topic none <3000				-16		75
topic none <32		26		34										23	-15						26
topic none <40				43
topic none <400	-45
topic none <5	-25	-18
topic none <5 area		-21
topic none <50				40					32
topic none <60	18			52					34
topic none <600	36	34		-24		25																37
topic none <72									24											33
topic none <72 length		29
topic none <8	-35	-17
topic none <85		-19		49		-18	27
topic none <85 length		21
topic none both				-20					31					31
topic none both+						31
topic none current		-33
topic none decimal													-37					28	32
topic none huge	-50
topic none metric						21
topic none slope		20
topic none temperature		-45
topic none weight		-28
topic of heat	31								50	48
topic of heat none									40
topic of heat us									37	45
topic of heat whole									50	48
topic of moisture	26			-24								106
topic of moisture percent		38
topic of moisture us				-27								78			-29
topic of moisture whole				-25								91
topic of pressure	55			-22		-18									62		50
topic of pressure length		-19
topic of pressure pressure		21
topic of pressure us				-22											51
topic of pressure whole				-22		-18									62		50
topic ohms				34					24										41
topic ohms length		-39
topic ohms none				52															19
topic ohms other		54
topic ohms us									30									-27	34
topic ohms whole				38					28
topic place	-31
topic place <1		-20
topic place <12												-19
topic place <16		-15
topic place <16 length		-12
topic place <2	-33
topic place <26		66
topic place <3	-30	-16
topic place <40		31
topic place <5	-30	-16
topic place <72	11	19		-33
topic place <8	-26
topic place <8 length		22
topic place area		37
topic place metric						-19						-20
topic place none				18
topic place temperature		21
topic pressure		21													42	29	19
topic pressure <100		22
topic pressure <12	-27								-16				34		36
topic pressure <16		-35
topic pressure <16 length		-39
topic pressure <2	-71															-29
topic pressure <5 length		-27
topic pressure <8		23
topic pressure length		-14
topic pressure metric						-16									-36	77	64
topic pressure none												-16			56
topic pressure pressure		30
topic pressure us															48
topic pressure whole															47	33	22
topic space <0.1		29
topic space <0.1 length		29
topic space <1		36
topic space <1 length		36
topic space <100	14	-11		33		38
topic space <100 length		-28
topic space <1000	12					71
topic space <12		23		34										24
topic space <16				38	20
topic space <160		-37
topic space <160 length		-37
topic space <2	-36
topic space <20				31	-29				43				37
topic space <200	37					66
topic space <26	24			69
topic space <26 length		34
topic space <260		-51											65
topic space <3	-43					-15
topic space <3000						21
topic space <32				39					-24												28
topic space <40		36		36
topic space <40 length		36
topic space <400	41			-18		80											22
topic space <5	-42	39
topic space <5 length		35
topic space <50		28			36																	-38
topic space <50 length		30
topic space <60	37	36		34		30
topic space <60 length		36
topic space <600	26	89				65
topic space <72	26	41		73
topic space <72 length		39
topic space <8					32
topic space <85		44				48
topic space <85 length		42
topic space area		-17
topic space both+				-16		25
topic space decimal				-19		-37		74					29	15	-23				-18
topic space metric						44
topic space none						41
topic space us				30
topic space volume		-10
topic space whole						18
topic torque	-40	-6
topic torque length		-28
topic torque torque		22
topic voltage		23											15
topic voltage <0.6		-7
topic voltage <0.6 length		-11
topic voltage <1000						28
topic voltage <12	-44	32
topic voltage <130	43								30				66
topic voltage <16 length		-31
topic voltage <2	-47
topic voltage <2 length		18
topic voltage <20		33
topic voltage <26		29
topic voltage <3	-31	-37
topic voltage <3000						34
topic voltage <32		-16
topic voltage <5	-36
topic voltage <8	-64	44
topic voltage <8 length		39
topic voltage metric												35
topic voltage none												27	25
topic voltage voltage		49
topic weight	-34	17										-27	39	30	-30
topic weight none													27								24
topic weight us													29	32	-37							18
topic weight weight		34
topic weight whole												-28		28	-32							14
topic- airflow	21	-32																		35
topic- airflow <16		71
topic- airflow length		-31
topic- airflow us					21															43
topic- airflow whole					18															38
topic- angle		30		20
topic- angle length		29
topic- angle us				25
topic- current	46	71											46	61
topic- current none									29				55	-32
topic- current us														58
topic- current whole													49	58
topic- draft		24																24
topic- draft length		33
topic- draft us																		31		18
topic- heat									20
topic- heat <12	-22	21
topic- heat <12 length		14
topic- heat <16	54			-15	43														75
topic- heat <2	46	-37		25	47
topic- heat <2 length		-44
topic- heat <3	-39								-24
topic- heat <32	-14			-25											-24
topic- heat <40				20
topic- heat <5																					36
topic- heat <60		16
topic- heat <72	27	34							19						28
topic- heat decimal													-20					38	76		34
topic- heat metric						41
topic- heat none				-16																	27
topic- heat pressure		59
topic- heat us					24				23
topic- heat whole									27
topic- light	23	41
topic- light length		53
topic- light none						-27			-16
topic- moisture	-18	17
topic- moisture <12		-33				-20	28			33		34
topic- moisture <2	-21
topic- moisture <3	-33
topic- moisture <5		-29
topic- moisture metric												28
topic- moisture none				23
topic- moisture percent		36
topic- moisture us																				-30
topic- of current	-27												19
topic- of current whole													21
topic- of heat									25
topic- of heat us									25
topic- of heat whole									25
topic- of moisture	-62	-19		-12
topic- of moisture percent		29
topic- of moisture whole				-12
topic- of pressure	15	-70												21	43
topic- of pressure us				-12										25	39
topic- of pressure whole				-11										23	45
topic- ohms	22	13							-27							19			36
topic- ohms length		18
topic- ohms none									-15
topic- ohms us									-28										43
topic- ohms whole				23					-31							25
topic- place <1		-20
topic- place <1 length		-20
topic- place <100		29
topic- place <12	-15											51
topic- place <16	23			33								35
topic- place <2	-42
topic- place <20		35
topic- place <20 length		36
topic- place <26		36
topic- place <26 length		36
topic- place <3	-27	-15
topic- place <3 length		-15
topic- place <32		17
topic- place <32 length		17
topic- place <40	63			61							73
topic- place <5		27			28
topic- place <5 length		25
topic- place <50		52
topic- place <50 length		35
topic- place <60		17
topic- place <60 length		17
topic- place <72		49
topic- place <8						20
topic- place <8 length		-21
topic- place <85		-22
topic- place length		25
topic- place none						27						38
topic- pressure																		18
topic- pressure <0.6		-27
topic- pressure <2	-40	-23													-55
topic- pressure <5																27		39
topic- pressure <72	-34								-19
topic- pressure <8																		33
topic- pressure decimal																		66
topic- pressure length		-24
topic- pressure metric										53						27
topic- pressure none				51
topic- pressure pressure		50
topic- pressure us				-29														32
topic- pressure weight		-52
topic- space <0.6		36
topic- space <0.6 length		36
topic- space <100		55
topic- space <100 length		55
topic- space <12				52
topic- space <16				39
topic- space <2	-37
topic- space <26	-84	20		-67
topic- space <3				33
topic- space <32	41	-16		53		-19						43
topic- space <32 length		-16
topic- space <40		22				22
topic- space <40 length		16
topic- space <5 length		31
topic- space <50	-45
topic- space <60		-42
topic- space <600	-22					27
topic- space <72				-16		24			25
topic- space <8	16	20			39
topic- space <8 length		38
topic- space <85	-12	21				-19
topic- space <85 length		27
topic- space both				-23		27			55
topic- space decimal				-13										61				24
topic- space metric												22
topic- space us				24
topic- torque	60	46		-11
topic- torque whole				-11
topic- voltage	-33	-24											31
topic- voltage <12						-20						32	32
topic- voltage <16		-39
topic- voltage <2		-20
topic- voltage <26		28
topic- voltage <3	-50								-29
topic- voltage <5				36
topic- voltage <5 length		10
topic- voltage <8		-25
topic- voltage metric						24
topic- voltage none													41
topic- voltage percent		32
topic- voltage voltage		-41
topic- weight	-33	67																				21
topic- weight length		68
topic- weight us																						24
topic- weight whole																						21
topic-- airflow	13	29																	22	20
topic-- airflow length		25
topic-- airflow us																			26
topic-- airflow whole																				21
topic-- angle <12		29
topic-- angle <12 length		29
topic-- current		-12											29
topic-- current none													36
topic-- draft		-29		26																16
topic-- draft <2	-9							32	-19
topic-- draft length		-40
topic-- draft us				32																21
topic-- draft whole				27																17
topic-- heat <0.6		-21
topic-- heat <0.6 length		-26
topic-- heat <16															21
topic-- heat <2	-32
topic-- heat <3	-26
topic-- heat <5		52
topic-- heat <5 length		52
topic-- heat <8																					30
topic-- heat decimal				-29																	75
topic-- heat metric						20
topic-- heat us				-20											23
topic-- light	-39
topic-- moisture												31
topic-- moisture <16		40
topic-- moisture <3	20			36
topic-- moisture none												58
topic-- moisture us													18		26
topic-- moisture whole												39
topic-- of pressure	46	26													47		37
topic-- of pressure length		25
topic-- of pressure us															45
topic-- of pressure whole															29		39
topic-- ohms		37																	20
topic-- ohms us				-16															26
topic-- place <1		61
topic-- place <1 length		61
topic-- place <12	28	-56		42
topic-- place <12 length		-46
topic-- place <16		49		37
topic-- place <2	-30	84
topic-- place <2 length		86
topic-- place <26		-66
topic-- place <26 length		-70
topic-- place <3	-15			-10
topic-- place <32		33
topic-- place <32 length		30
topic-- place <5																24
topic-- place <5 length		-26
topic-- place <50		-17
topic-- place <60		24
topic-- place <72		-18
topic-- place <8															-17						24	16
topic-- place area		65
topic-- place metric						34		-33								29
topic-- place none				27		19
topic-- pressure	10	45													26		18
topic-- pressure <2	-36								-18
topic-- pressure length		46
topic-- pressure metric																	49
topic-- pressure us				25											45
topic-- pressure whole															17		21
topic-- space <0.6		-26
topic-- space <0.6 length		-34
topic-- space <1		34
topic-- space <1 length		34
topic-- space <12	16	18				19								32
topic-- space <12 length		16
topic-- space <16	-9	-20										23
topic-- space <2	-32	-33
topic-- space <2 length		-33
topic-- space <3	-22
topic-- space <40		47
topic-- space <40 length		47
topic-- space <5		-34			27
topic-- space <5 length		-37
topic-- space <60	25								41
topic-- space <72	-34			37					-19						-12
topic-- space <8														34
topic-- space metric						27
topic-- space percent		-9
topic-- voltage	16
topic-- voltage <16		61
topic-- voltage <2					47
topic-- voltage <3	-16
topic-- voltage <5	-24			-11								31
topic-- voltage metric												29		24
topic-- voltage none									20
topic-- voltage us				36	20
topic-- weight	-50	-26				-20								33
topic-- weight whole						-20
topics 	-28
topics  <0.1	-65	40
topics  <0.1 length		24
topics  <0.6	-26			44									-17
topics  <0.6 slope		21
topics  <1		-24
topics  <1 length		-28
topics  <100		19		-30					48		12
topics  <1000						58
topics  <115	-31								23		-24
topics  <12	-27
topics  <12 area		-23
topics  <12 current		-39
topics  <130				23		-15			-20				47
topics  <16	-32
topics  <160		32				41
topics  <160 length		10
topics  <2	-31
topics  <20												36
topics  <200		40
topics  <26				25								26
topics  <26 percent		48
topics  <260		34		-15		37							-38				26			31
topics  <3	-31
topics  <3000				-16		75
topics  <32		26		34										23	-15						26
topics  <40				43
topics  <400	-45
topics  <5	-25	-18
topics  <5 area		-21
topics  <50				40					32
topics  <60	18			52					34
topics  <600	36	34		-24		25																37
topics  <72									24											33
topics  <72 length		29
topics  <8	-35	-17
topics  <85		-19		49		-18	27
topics  <85 length		21
topics  current		-33
topics  huge	-50
topics  slope		20
topics  temperature		-45
topics  weight		-28
topics airflow									-24			-21								39		16
topics airflow flow		28
topics airflow space		-27
topics airflow space length		-27
topics angle	-38	26		-22							62
topics angle <0.6		-24
topics angle <0.6 length		-30
topics angle <3	-46
topics angle length		21
topics angle space						27
topics angle space <0.6		33
topics angle space <0.6 length		33
topics current	-36													47
topics current weight		-31
topics draft																		58
topics draft <26	-27
topics draft airflow length		-18
topics draft space		37
topics draft space length		36
topics heat	16			-27					88	34			32
topics heat <72	24			-28		-12			30	55
topics heat length		-11
topics heat ohms		-22
topics heat place		70							43
topics heat pressure		28
topics heat space		34
topics heat temperature		54
topics heat voltage		16				29
topics heat voltage space	17								44
topics light		49
topics light <2	-25
topics light space		26
topics light space length		26
topics moisture	-76			-15
topics moisture place <0.6		16
topics moisture place <0.6 length		16
topics moisture place length		42
topics moisture space															46							-44
topics moisture space place		28
topics moisture space place length		25
topics of heat heat	33								32	54
topics of moisture moisture	33	40		-23								79
topics of moisture moisture percent		38
topics of pressure pressure	46	21				-18			-28						54	25	55
topics ohms	-45	-27							-17										32
topics ohms length		-29
topics ohms space length		14
topics place	-27
topics place <3	-23	-53
topics place <3 length		-30
topics place <5	-26
topics place length		27
topics pressure						-20			35						26	48
topics pressure draft pressure		22
topics pressure length		-24
topics space						20
topics space <0.1		29
topics space <0.1 length		30
topics space <1		32
topics space <1 length		32
topics space <100	8			40		39			-30				12
topics space <1000						46
topics space <115 length		-19
topics space <12	19	30		41										27
topics space <12 length		25
topics space <16		49		39	23
topics space <16 length		47
topics space <160		-37
topics space <160 length		-37
topics space <2	-35
topics space <20				49	-31								32
topics space <26				51
topics space <260	28	-52		-12									72		-32
topics space <3	-40					-14		22
topics space <32									-17	26	-27										33
topics space <40				31
topics space <400	41			-18		80											22
topics space <5	-40
topics space <50		25			42
topics space <50 length		29
topics space <60		39
topics space <60 length		39
topics space <600	26					65
topics space <72		36
topics space <72 length		36
topics space <8					36
topics space <85	66	31		71		57
topics space <85 length		31
topics space area		-29
topics space place	-30
topics space place <2		30
topics space place <2 length		30
topics space place <5	-17
topics torque torque		21
topics voltage		32											38
topics voltage <12	-37
topics voltage <130	36												79
topics voltage <3	-27
topics voltage <5	-27
topics voltage <8	-36	40
topics voltage length		23
topics voltage place		-40
topics voltage place length		-40
topics voltage space	35	27		56
topics voltage space <0.6		37
topics voltage space <0.6 length		36
topics voltage space length		23
topics weight															-28						27	29
unit A		-42
unit C		-13
unit L		-39
unit bar		-30
unit cfm		14
unit cm		78
unit ft		-10
unit gal		-41
unit in wc		-48
unit in-lb		29
unit in/ft		26
unit m		-25
unit micron		22
unit mm		26
unit ohm		30
unit psi		74
unit sq ft		27
unit sq m		72
unit square		-116
use buy whole	-60	-80
use buy whole length		-54
use have whole		-22
use measure decimal		32
use measure fine		28
use measure fine length		28
use measure half		49
use measure half length		48
use measure quarter		33
use measure quarter length		33
use measure whole		28
use measure whole length		32
use move whole length		13
use need quarter		-29
use need quarter length		-29
use need whole	-10	-33
use need whole length		-20
use null decimal	34
use null decimal current		34
use null decimal voltage		24
use null whole area		27
use null whole flow		27
use null whole other		37
use null whole temperature		39
use null whole weight		-25
use other decimal	-25	33
use other decimal length		33
use other half		27
use other half length		28
use other whole area		61
use other whole percent		34
use other whole temperature		-47
use say fine		57
use say fine length		57
use say half		-23
use say half length		-30
use say whole		21
use see whole	-27	-45
use use whole	-24	-35
use use whole length		-31
use work decimal		48
use work quarter length		-29
use work whole	-23
use work whole area		-30
use work whole length		21
use work whole other		-24
use work whole pressure		-24
use work whole weight		30
verb # # current		-9
verb # # percent		25
verb # <q>	-78
verb # <t>		-14
verb # and	28
verb # area		20
verb # at length		-20
verb # cut		19
verb # cut length		19
verb # decimal	16
verb # decimal current		35
verb # decimal length		-9
verb # decimal voltage		24
verb # flow		29
verb # on	-22
verb # other		33
verb # over		35
verb # over length		35
verb # slope		26
verb # temperature		27
verb # the		-16
verb # whole area		15
verb # whole temperature		27
verb # whole weight		-28
verb # within		22
verb # within length		22
verb be ahead	-15	-19
verb be ahead whole	-15
verb be ahead whole length		25
verb be behind						20
verb be behind a	-73
verb be behind about		-26
verb be behind about length		-30
verb be behind and		-16
verb be behind and length		-16
verb be behind are	8
verb be behind at	57
verb be behind by		34
verb be behind by length		30
verb be behind decimal	-38	27
verb be behind decimal length		25
verb be behind fine		35
verb be behind fine length		35
verb be behind half		28
verb be behind half length		27
verb be behind in		20
verb be behind in length		20
verb be behind on	-37
verb be behind out		-16
verb be behind over		-47
verb be behind over length		-47
verb be behind percent		27
verb be behind pressure		19
verb be behind temperature		-17
verb be behind the		-27
verb be behind the length		-27
verb be behind whole percent		27
verb be behind whole temperature		-17
verb blow behind															52							-52
verb bring behind	-32	-60												39
verb bring behind length		-38
verb bring behind whole		-66
verb buy behind		-53
verb buy behind length		-24
verb call behind				35		-17								35
verb check behind		-22
verb come behind	-38	33				-17			23						-17							15
verb come behind length		38
verb come behind whole	-11
verb come behind whole length		14
verb count behind	-37
verb count behind whole	-37
verb cut behind							39
verb cut behind at		30
verb cut behind at length		28
verb cut behind cut	-16
verb cut behind length		32
verb cut behind whole		18
verb cut behind whole length		18
verb do behind	-14	-31
verb do behind whole	-14	-34
verb drill behind	-24			-20
verb drill behind whole	-24
verb drop behind	-35			-14
verb find behind		38
verb find behind length		33
verb finish behind	-22	22		-13
verb finish behind length		22
verb finish behind whole	-22
verb get ahead	-30
verb get ahead whole	-30
verb get behind									21
verb get behind got		74
verb get behind length		-18
verb get behind the	-19
verb get behind whole		-19
verb get behind whole length		-39
verb give behind	31	-36												54
verb give behind whole	31	-27
verb go ahead	-15
verb go ahead whole	-15
verb go behind		37		60
verb go behind length		53
verb go behind whole length		36
verb grab behind	-21
verb grab behind whole	-21
verb hang behind				43
verb hang behind whole		29
verb hang behind whole length		36
verb have ahead	-24
verb have ahead #	-24
verb have ahead whole	-24
verb have behind				28
verb have behind had	-27
verb have behind has	-18
verb have behind whole		-16
verb hit behind	-15								32
verb hit behind whole	-15
verb hold behind		31
verb hold behind held		21
verb hold behind length		22
verb hold behind whole		22
verb lay behind		-31
verb leave ahead		-45
verb leave ahead whole		-45
verb leave behind																30
verb leave behind whole		30
verb leave behind whole length		22
verb make behind									30
verb make behind whole		-20
verb make behind whole length		-19
verb measure behind		35
verb measure behind fine		22
verb measure behind fine length		22
verb measure behind length		30
verb measure behind whole		35
verb move behind	-45	27		-31
verb move behind length		28
verb move behind whole	-45	27
verb move behind whole length		28
verb must behind				48			18
verb need behind	-14	-22
verb need behind length		-31
verb need behind need		-19
verb need behind need length		-19
verb need behind needs	38	56
verb need behind of		-38
verb need behind of length		-38
verb need behind whole	-28	-39
verb need behind whole length		-51
verb null ahead	-28	-48
verb null ahead #	-26
verb null ahead length		-35
verb null ahead whole	-28
verb null behind a		-25
verb null behind a length		-18
verb null behind about		28
verb null behind about length		28
verb null behind all	-22
verb null behind angle		17
verb null behind at	49
verb null behind by	29	26
verb null behind by length		26
verb null behind decimal	71	23
verb null behind good		23
verb null behind good length		23
verb null behind got	-36
verb null behind half		-10
verb null behind half length		-10
verb null behind in		-17
verb null behind in length		-17
verb null behind is		9
verb null behind is length		9
verb null behind it's	6
verb null behind maybe		-27
verb null behind maybe length		-27
verb null behind on	-18
verb null behind only	45	33
verb null behind only length		33
verb null behind out		56
verb null behind over		34
verb null behind over length		34
verb null behind that's	-21
verb null behind the	-21
verb null behind there's	-25
verb null behind to		23
verb null behind to length		21
verb null behind whole angle		17
verb open behind	-41			21		-15
verb order behind	-33	-90		-13
verb order behind length		-90
verb order behind whole	-33
verb patch behind				26
verb pick behind	-44			-18
verb pick behind whole	-44
verb pitch behind		30
verb pitch behind length		29
verb prime behind	-32			-19
verb prime behind whole	-32
verb pull behind	-31	29		-20
verb pull behind whole	-31	30
verb put behind															73							-32
verb put behind whole		14
verb put behind whole length		20
verb read behind	54			-27								34							30
verb read behind reads	30
verb read behind whole	56
verb rip behind		44
verb rip behind length		44
verb rip behind to		38
verb rip behind to length		38
verb run behind	-20																				37
verb run behind whole	-27
verb run behind whole length		30
verb sag behind		21
verb sand behind	-43
verb sand behind whole	-43
verb say behind												36
verb say behind say		57
verb say behind says	-15	23
verb say behind says length		12
verb send behind		-35
verb send behind length		-35
verb send behind whole		-35
verb send behind whole length		-35
verb set behind				23		28									25
verb set behind to	22
verb shim behind		23
verb shim behind length		23
verb should behind	38																	45
verb should behind be	38
verb should behind whole	25
verb sit behind half		28
verb sit behind half length		28
verb stick behind		53
verb stick behind length		53
verb swap behind	-47	-66		-27
verb swap behind length		-66
verb swap behind whole	-39
verb take behind		-20		19									26
verb take behind length		-26
verb take behind whole		-32
verb take behind whole length		-41
verb tell behind		-69		20
verb tell behind length		-69
verb think behind		18
verb turn behind											33
verb use behind	-24	-20		-12
verb use behind length		-18
verb use behind whole	-24
verb want behind at	52
verb want behind length		18
verb want behind quarter		-44
verb want behind quarter length		-44
verb want behind wants		-25
verb want behind wants length		-25
verb want behind whole		16
verb want behind whole length		46
w # at		26
w # deep	25	48
w # deep length		48
w # long		49
w # long length		49
w # more	-40
w # of	-25
w # on length		-21
w # up		30
w # up length		30
w - #	-27
w <q> #	-44	-43
w a #	-24	-21
w a hole		18
w a hole length		18
w about #		32
w about # area		20
w about by		14
w about by length		13
w about long		25
w about long length		25
w about of		23
w about of length		23
w all #	-27
w at #		34
w at centres		-30
w at centres length		-30
w at off	41	-17
w at off length		-17
w be #		42
w be # length		44
w by #	20	28
w by # length		26
w cut #		21
w cut # length		21
w down #		40
w down # length		40
w every #		30
w every # length		30
w for #	-27
w good #		24
w good # length		24
w had #	-32
w have #	16
w in #	-44
w is #	14
w is low		32
w is low length		27
w is short		47
w is short length		47
w it #		28
w it # length		23
w it's #	21
w like #		22
w like # length		23
w maybe #		25
w maybe # length		20
w not #	-49
w of #	-44
w only #		23
w only # length		23
w out # length		43
w over #	-20
w says #		22
w says to	-36
w the #	-28	-40
w the # length		-35
w to #	13
w up #		38
w up # length		38
w was #	-31	-37
w+1 # decimal		33
w+1 # decimal length		18
w+1 # pressure		32
w+1 # volume		-17
w+1 -	-29
w+1 - whole	-29
w+1 <q>		-14			28								13		-16
w+1 <q> length		-19
w+1 <q> whole		-29
w+1 <q> whole length		-44
w+1 <t>		-34		28											-23
w+1 a	48			-23					-21				-25	129
w+1 above		34
w+1 above length		34
w+1 across	38	40		40									56
w+1 across length		40
w+1 across whole	38
w+1 aff		19
w+1 aff length		19
w+1 after		48										-23							32
w+1 all		-16
w+1 all length		-17
w+1 all whole		-19
w+1 all whole length		-21
w+1 and				24
w+1 and fine		27
w+1 and fine length		25
w+1 are	-16
w+1 are whole	-16
w+1 at	22	26		-16					18	70
w+1 at fine		23
w+1 at fine length		23
w+1 at half		16
w+1 at half length		16
w+1 at length		29
w+1 at whole	22	23
w+1 at whole length		30
w+1 before																			42
w+1 before whole	-26
w+1 behind		46
w+1 behind length		46
w+1 below		54
w+1 below length		54
w+1 below whole		39
w+1 below whole length		39
w+1 between		41
w+1 between length		41
w+1 board	-26
w+1 board whole	-26
w+1 boards	-26
w+1 boards whole	-26
w+1 brackets	-18
w+1 brackets whole	-18
w+1 by	-18					30					-35
w+1 by length		-9
w+1 by whole	-19	-13
w+1 by whole length		-19
w+1 centers		26
w+1 centers length		26
w+1 centres		-19
w+1 centres length		-19
w+1 centres whole		-30
w+1 centres whole length		-30
w+1 cold		19
w+1 cold whole		18
w+1 deep	39			45		45
w+1 deep fine		-63
w+1 deep fine length		-63
w+1 deep half		42
w+1 deep half length		42
w+1 deep quarter		44
w+1 deep quarter length		44
w+1 deep whole	41	51
w+1 deep whole length		51
w+1 down		34
w+1 for	-19			26											47							-48
w+1 for length		-30
w+1 for whole	-19
w+1 from		34
w+1 from length		34
w+1 from whole		33
w+1 from whole length		33
w+1 gap		28
w+1 gap length		28
w+1 hangers	-15
w+1 hangers whole	-15
w+1 high	16	35				31		37
w+1 high fine		19
w+1 high fine length		19
w+1 high length		34
w+1 high whole		31
w+1 high whole length		27
w+1 higher		20
w+1 higher length		20
w+1 higher whole		20
w+1 higher whole length		20
w+1 hole		41
w+1 hole length		41
w+1 hole quarter		24
w+1 hole quarter length		24
w+1 holes	-28			-19
w+1 holes whole	-28
w+1 in	15								56
w+1 in fine		29
w+1 in fine length		29
w+1 in quarter		13
w+1 in whole	15	-22
w+1 in whole length		-13
w+1 is	-27			-16
w+1 is whole	-27
w+1 layers	-31
w+1 layers whole	-31
w+1 left whole		42
w+1 long	14			47				41
w+1 long whole		34
w+1 long whole length		34
w+1 low		17
w+1 lower		30
w+1 lower length		30
w+1 lower whole		27
w+1 lower whole length		27
w+1 max	-26													23
w+1 more	-25
w+1 more whole	-39
w+1 no	-51	-18
w+1 no whole	-51
w+1 nos	-24
w+1 nos whole	-24
w+1 now	45	23							73						40			20				-27
w+1 now whole	43	44
w+1 oc		25
w+1 oc length		25
w+1 oc whole		25
w+1 oc whole length		25
w+1 of	-25
w+1 of whole	-25
w+1 of whole area		-16
w+1 off		38		64
w+1 off fine		33
w+1 off fine length		33
w+1 off length		40
w+1 off quarter		-21
w+1 off quarter length		-21
w+1 off whole		52
w+1 off whole length		55
w+1 on				-14		20															35
w+1 on half		-37
w+1 on half length		-37
w+1 on whole		42
w+1 on whole length		43
w+1 or		34
w+1 or length		34
w+1 or whole		34
w+1 or whole length		34
w+1 out		52
w+1 out fine		50
w+1 out fine length		50
w+1 out length		54
w+1 out of plumb		36
w+1 out of plumb length		24
w+1 over		38
w+1 over fine		30
w+1 over fine length		30
w+1 over half		26
w+1 over half length		26
w+1 over length		38
w+1 over whole		37
w+1 over whole length		37
w+1 panels	-17
w+1 panels whole	-17
w+1 posts	-13
w+1 posts whole	-13
w+1 screws	-22
w+1 screws whole	-22
w+1 short	-31	44
w+1 short half		38
w+1 short length		43
w+1 short whole	-31
w+1 shy		25
w+1 shy length		25
w+1 side	-20
w+1 side whole	-20
w+1 so		-25
w+1 so length		-25
w+1 the	-42	12
w+1 the half		28
w+1 the length		10
w+1 the whole	-42
w+1 thick whole		-43
w+1 thick whole length		-43
w+1 to				41		19
w+1 to quarter		27
w+1 to whole		27
w+1 too long		-14
w+1 too long length		-14
w+1 too long whole		21
w+1 too long whole length		21
w+1 too short		26
w+1 too short length		26
w+1 top		31
w+1 top length		31
w+1 toward		31
w+1 toward length		31
w+1 treads	-20
w+1 treads whole	-20
w+1 under whole		57
w+1 up	19			41		30			35
w+1 up whole	19	57
w+1 up whole length		57
w+1 when	21					28			44
w+1 when whole	21
w+1 where		74
w+1 which															29
w+1 wide	10			61		23
w+1 wide fine		40
w+1 wide fine length		40
w+1 wide quarter		6
w+1 wide quarter length		6
w+1 wide whole	10
w+1 with	26	27		-16					50
w+1 with length		-6
w+1 with whole	26	36
w+2 # # pressure		32
w+2 # # volume		-17
w+2 - <q>	-29
w+2 <q> #	-81	-59		-28											-20
w+2 <q> # length		-33
w+2 <t> #		-9		37											-28
w+2 across #		27
w+2 across # length		27
w+2 and <q>		-23		29
w+2 and <q> length		-23
w+2 at the	31	28							46	56
w+2 at the length		22
w+2 behind the		37
w+2 behind the length		37
w+2 below the		34
w+2 below the length		34
w+2 by <q>		-25
w+2 by <q> length		-25
w+2 by the		47		36					-17	35	-30
w+2 by the length		48
w+2 centers #		24
w+2 centers # length		24
w+2 centres #		28
w+2 centres # length		28
w+2 cold #		19
w+2 deep #	29			20		38
w+2 down #		-26
w+2 down # length		-27
w+2 for <q>		27
w+2 high #		31
w+2 high # length		29
w+2 hole #		21
w+2 hole # length		21
w+2 in #		-17
w+2 in # length		31
w+2 in <q>		59
w+2 in <q> length		59
w+2 in the									31
w+2 in the length		-9
w+2 long #	33					53		46
w+2 low on		13
w+2 low on length		13
w+2 lower than		17
w+2 lower than length		17
w+2 max #	-26													23
w+2 nos #	-24
w+2 now #	54	46							77						42			21				-28
w+2 of em	-44			-17
w+2 of it		-12
w+2 of it length		-21
w+2 of the	-19	34
w+2 of the length		34
w+2 of them	-35			-14
w+2 off #		15
w+2 off # length		15
w+2 off the	23			61
w+2 on center		37
w+2 on center length		37
w+2 on the	31	16				37						32			-21
w+2 over <q>		29
w+2 over <q> length		29
w+2 over the		38
w+2 over the length		38
w+2 short of		40
w+2 short of length		40
w+2 short on		38
w+2 short on length		33
w+2 shy of		19
w+2 shy of length		19
w+2 thick #		85
w+2 thick # length		85
w+2 to <q>	14			25
w+2 to go	-49
w+2 to the	51			67		47			-15
w+2 toward the		27
w+2 toward the length		28
w+2 up #		30
w+2 up # length		30
w+2 wide #	12			45		37
w-1 # current		-21
w-1 # decimal		35
w-1 # decimal length		31
w-1 # percent		25
w-1 # quarter		27
w-1 # quarter length		26
w-1 # weight		-35
w-1 # whole current		-23
w-1 # whole percent		25
w-1 # whole weight		-35
w-1 (		-60
w-1 ( length		-52
w-1 +	-24
w-1 + whole	-24
w-1 -	-34
w-1 - whole	-34
w-1 2 x length		58
w-1 <n>	-29
w-1 <n> length		24
w-1 <n> whole	-29
w-1 <q>	-33	-49
w-1 <q> length		-26
w-1 <q> whole	-16	-48
w-1 <q> whole length		-22
w-1 <t>	-26	13
w-1 <t> length		47
w-1 <t> whole	-26
w-1 <t> whole length		36
w-1 @ whole length		-43
w-1 a	-34	-16		-18	28	-22								32
w-1 a whole	-31	-35
w-1 about	11					39			-22		25
w-1 about area		21
w-1 about fine		34
w-1 about fine length		34
w-1 about quarter		41
w-1 about quarter length		41
w-1 about whole	11
w-1 about whole area		20
w-1 all	-26
w-1 all whole	-26
w-1 and quarter		-19
w-1 and quarter length		-19
w-1 are	12			32		46								23
w-1 are quarter		44
w-1 are quarter length		44
w-1 are whole	8	-51
w-1 are whole length		-51
w-1 at		23		43
w-1 at fine		54
w-1 at fine length		54
w-1 at percent		23
w-1 at pressure		35
w-1 at weight		19
w-1 at whole		25
w-1 at whole length		-16
w-1 at whole percent		23
w-1 at whole pressure		33
w-1 at whole weight		19
w-1 back		42
w-1 back length		42
w-1 be				40	24										-20			21
w-1 be whole	21	-25
w-1 be whole length		-25
w-1 between	-26
w-1 between whole	-26
w-1 bottom		34
w-1 bottom length		34
w-1 bottom whole		36
w-1 bottom whole length		36
w-1 by	-19	23			16
w-1 by half		44
w-1 by half length		44
w-1 by length		22
w-1 by quarter		35
w-1 by quarter length		35
w-1 by whole	-19
w-1 count	-36
w-1 count whole	-36
w-1 cut	-23	24						22
w-1 cut length		24
w-1 cut whole	-41	20
w-1 cut whole length		20
w-1 down		54
w-1 down length		50
w-1 down whole		33
w-1 down whole length		25
w-1 drop		63
w-1 em	-38
w-1 em whole	-38
w-1 every	88	71		122	-21
w-1 every length		71
w-1 every whole	88	71
w-1 every whole length		71
w-1 falls		19
w-1 falls length		19
w-1 for	-23	-23		-33		27								28
w-1 for whole	-23
w-1 for whole length		54
w-1 from	30			30		32						29
w-1 from whole	30
w-1 gap		32
w-1 gap length		32
w-1 gap whole		24
w-1 gap whole length		24
w-1 get													36
w-1 good		39
w-1 good half		31
w-1 good half length		31
w-1 good length		39
w-1 got	-18																			28
w-1 got whole	-18
w-1 had	-27
w-1 had whole	-27
w-1 has	-21
w-1 has whole	-21
w-1 have	-16
w-1 have whole	-16
w-1 held		22
w-1 held whole		22
w-1 holding		-20
w-1 hole		52
w-1 hole length		52
w-1 in	-47	-6				-25											27
w-1 in whole	-28	-25
w-1 in whole length		-11
w-1 is				38
w-1 is fine		38
w-1 is fine length		38
w-1 is half		31
w-1 it				30															34
w-1 it's				42					39
w-1 it's fine		52
w-1 it's fine length		52
w-1 it's half		49
w-1 it's half length		49
w-1 it's quarter		32
w-1 it's quarter length		33
w-1 it's whole		21
w-1 it's whole length		11
w-1 like		33													-23							17
w-1 like half		21
w-1 like half length		21
w-1 like length		35
w-1 like whole		26
w-1 like whole length		28
w-1 long	-33	-7
w-1 long length		-7
w-1 long whole	-33
w-1 measure		33
w-1 need		-19
w-1 need length		-19
w-1 needs	37	56		40				25
w-1 not	-52			-17
w-1 not whole	-52
w-1 now	-21
w-1 now whole	-21
w-1 of	-33	-23
w-1 of fine		-17
w-1 of fine length		-17
w-1 of half		-32
w-1 of half length		-32
w-1 of length		-28
w-1 of whole	-33
w-1 of whole length		-13
w-1 off	-18	39
w-1 off length		39
w-1 off whole	-18
w-1 on	-36
w-1 on whole	-36
w-1 only				47		31
w-1 other	-28
w-1 other whole	-28
w-1 out										31			31
w-1 out length		40
w-1 out quarter		44
w-1 out quarter length		44
w-1 out whole		-25
w-1 over	-29	53		-10					54		-33
w-1 over length		55
w-1 over whole	-29
w-1 past									39						27							-29
w-1 put		-61
w-1 rated																					30
w-1 read	41	42										40									74
w-1 read whole	37	42
w-1 reading	38	38		-20						27	-30	39	32					21
w-1 reading whole	26
w-1 reads	37	20		-30					41				45	-31					23
w-1 reads decimal		20
w-1 reads whole	30
w-1 run		23
w-1 run length		23
w-1 said																						-41
w-1 say		57
w-1 say length		36
w-1 say whole		53
w-1 says		23							28
w-1 says length		14
w-1 says whole		51
w-1 set									53				-24
w-1 short		52
w-1 short length		52
w-1 take		28
w-1 take length		28
w-1 that's	-21
w-1 that's whole	-21
w-1 the	-26	-57
w-1 the half		-32
w-1 the length		-51
w-1 the whole	-25	-57
w-1 the whole length		-48
w-1 there's	-25
w-1 there's whole	-25
w-1 to	20	51					15		34						18
w-1 to other		22
w-1 to quarter		20
w-1 to quarter length		20
w-1 to whole	15
w-1 to whole other		22
w-1 took	-37
w-1 took whole	-28
w-1 under												36
w-1 up		28
w-1 up half		34
w-1 up half length		30
w-1 up length		40
w-1 up whole length		27
w-1 wall		-50		32		-28						30
w-1 wall length		-50
w-1 want				-15		23
w-1 wants		-15											26
w-1 wants length		-21
w-1 was				-20					31								26	-20
w-1 was fine		-14
w-1 was fine length		-14
w-1 was whole	14	-26
w-1 with	-34	-13
w-1 with length		-39
w-1 with whole	-34
w-1 within		39
w-1 within length		39
w-2 # # current		-21
w-2 # # percent		25
w-2 # # weight		-35
w-2 # <q>	-42												-20
w-2 # about length		-12
w-2 # all	-27					-13
w-2 # cut	-16
w-2 # it's	6			44					42
w-2 # other	-22
w-2 # that's	-21
w-2 # there's	-25
w-2 # want				-12											19					12
w-2 <q> -	-28
w-2 <q> and	-38	23
w-2 <q> and length		23
w-2 <q> at		-33
w-2 <q> at length		-36
w-2 <q> by		-25		25	25
w-2 <q> by length		-25
w-2 <q> of	-33
w-2 <q> to	-36
w-2 <q> x	-31
w-2 a good		38
w-2 a good length		38
w-2 by about		14
w-2 by about length		14
w-2 cut at		16
w-2 cut at length		16
w-2 down to	44	30		-20					48						31					22
w-2 down to length		25
w-2 for about		30
w-2 for about length		30
w-2 i got				14
w-2 in about		14
w-2 in at	38			45	-28				36						-25			25				20
w-2 is a				-20										52
w-2 it about		-30
w-2 it about length		-30
w-2 it at	-9								34
w-2 it to	37			38											39
w-2 it was	36								68
w-2 it's a		-62
w-2 of the	-22
w-2 out at length		-6
w-2 out of	-30
w-2 short by		-20
w-2 short by length		-20
w-2 should be	40																	41
w-2 the bottom		35
w-2 the bottom length		35
w-2 the other	-18
w-2 there was	-29
w-2 to be	-44				29										-35
ws # COP	-21
ws # PREP		35
ws # Vworkb		31
ws # tarea	-34
ws # tdefect	-22
ws # tfixture	-25
ws # tmaterial	-25
ws # tsurface	-31
ws # w		-10
ws - #	-27
ws <q> #	-44	-43
ws <q> w	37
ws <t> w		20
ws <t> w length		20
ws a #	-24	-21
ws a PREP	-61
ws a tsurface		23
ws a tsurface length		23
ws a w		64
ws a w length		64
ws about #		32
ws about # area		20
ws about PREP		35
ws about PREP length		37
ws all #	-27
ws and w	23	21
ws and w length		21
ws at #		34
ws at PREP	60	-9
ws at PREP length		-22
ws be #		42
ws be # length		44
ws by #	20	28
ws by # length		26
ws cut #		21
ws cut # length		21
ws cut w		12
ws cut w length		12
ws down #		40
ws down # length		40
ws every #		30
ws every # length		30
ws falls PREP		19
ws falls PREP length		19
ws for #	-27
ws good #		24
ws good # length		24
ws got w	-31
ws had #	-32
ws have #	16
ws in #	-44
ws in PREP		44
ws in PREP length		44
ws is #	14
ws is PREP		19
ws it #		28
ws it # length		23
ws it w	19	66
ws it w length		66
ws it's #	21
ws it's PREP	7
ws it's tdefect		32
ws it's tdefect length		32
ws like #		22
ws like # length		23
ws maybe #		25
ws maybe # length		20
ws maybe PREP		-31
ws maybe PREP length		-36
ws not #	-49
ws of #	-44
ws of w	-38
ws on w	-18
ws only #		23
ws only # length		23
ws only PREP		-37
ws only PREP length		-37
ws only w		28
ws only w length		28
ws out # length		43
ws over #	-20
ws says #		22
ws says PREP	-15
ws take PREP		28
ws take PREP length		28
ws the #	-28	-40
ws the # length		-35
ws the w	-30	-38
ws the w length		-37
ws there's PREP	-25
ws to #	13
ws to PREP		36
ws to PREP length		28
ws up #		38
ws up # length		38
ws up PREP		22
ws up PREP length		22
ws up w		23
ws was #	-31	-37
ws was w		-24
ws was w length		-26
`;
