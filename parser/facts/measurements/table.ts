/** Written by tests/learn/readings.ts: what is seen of a figure, and hundredths for bare, said, near, in, ft, mm, cm, m, F, C, deg, %, V, A, psi, bar, kPa, in wc, ohm, cfm, uF, lb, W. */
export const READINGS = `
any	95	220
any flow		21
any power		-21
any slope		26
any torque		30
any volume		-29
apart			-46
begin false decimal current		35
begin false decimal length		-14
begin false decimal other		28
begin false decimal voltage		27
begin false quarter slope		20
begin false whole	-20
begin false whole current		-22
begin false whole power		-27
begin false whole temperature		26
begin false whole torque		30
begin false whole volume		-17
begin true decimal		35
begin true decimal length		31
begin true quarter		27
begin true quarter length		26
begin true whole current		-23
begin true whole percent		25
begin true whole weight		-36
bound 	-26
bound  flow		22
bound  power		-21
bound  slope		25
bound  torque		30
bound  volume		-27
bound about	27	35		48											-16
bound about area		47
bound about length		34
bound atLeast	-47			29
bound atMost		26
bound centers		43
bound centers length		43
bound hair		33
bound hair length		32
bound over	-43			-22							-43
bound under												35
clause before			30
clause before V			36
clause before ft			31
clause behind			12
clause behind deg			32
clause behind ft			58
clause false	-23
clause false flow		21
clause false power		-21
clause false slope		26
clause false torque		30
clause false volume		-29
digits digits decimal						-14			-16			-16	25	15
digits digits decimal current		37
digits digits decimal other		27
digits digits decimal voltage		30
digits digits quarter		17
digits digits quarter length		16
digits digits whole angle		18
digits digits whole area		12
digits digits whole current		-51
digits digits whole pressure		45
digits digits whole volume		-34
digits digits whole weight		-51
digits words decimal		53		-23		-20		33	-19			47						43	47		-19
digits words decimal length		26
digits words quarter slope		20
digits words whole	-25
digits words whole angle		-32
digits words whole current		37
digits words whole other		-31
digits words whole pressure		-49
digits words whole temperature		43
digits words whole weight		9
end false #	-42
end false # percent		19
end false # pressure		10
end false +	-24
end false -	-22
end false <n>	-30
end false <q>	-20	-23
end false <t>	-22
end false <t> length		21
end false a	-30
end false a length		30
end false about	14
end false all	-25
end false at length		-13
end false at pressure		35
end false be length		-6
end false between	-24
end false bottom		31
end false bottom length		31
end false by	-57	10
end false by length		10
end false cut	-17	17
end false cut length		17
end false decimal length		-12
end false decimal other		23
end false decimal voltage		23
end false down		39
end false down length		33
end false falls		19
end false falls length		19
end false from	34
end false good		34
end false good length		34
end false got	-33
end false has	-18
end false have	-45
end false held		18
end false in	-30	-30
end false is	-14
end false it	33
end false like		32
end false like length		32
end false long	-30
end false maybe		-17
end false maybe length		-32
end false needs		56
end false now	-27
end false of	-24	-38
end false of length		-38
end false off	-19	24
end false off length		24
end false on	-29
end false other	-22
end false over		27
end false over length		32
end false put		-61
end false quarter slope		19
end false read	33
end false says	-19
end false take		28
end false take length		28
end false that's	-18	-8
end false that's length		-8
end false the	-26	-56
end false the length		-49
end false there's	-23
end false to	34	27
end false to length		19
end false took	-27
end false up		11
end false up length		33
end false wall		15
end false wall length		15
end false wants		-34
end false wants length		-34
end false was	27
end false whole	-27
end false whole area		36
end false whole current		-27
end false whole flow		34
end false whole temperature		35
end false whole volume		-17
end false with	-18
end false with length		-41
end false within		25
end false within length		25
end false x	-31
end true -	-27
end true <q>	-43	-43
end true a	-23	-21
end true about		32
end true about area		20
end true all	-27
end true at		35
end true be		42
end true be length		44
end true by	21	28
end true by length		26
end true cut		20
end true cut length		20
end true decimal		33
end true decimal length		18
end true down		40
end true down length		40
end true every		30
end true every length		30
end true for	-28
end true good		25
end true good length		25
end true had	-33
end true have	17
end true in	-43
end true is	16
end true it		28
end true it length		23
end true it's	21
end true like		22
end true like length		23
end true maybe		25
end true maybe length		20
end true not	-49
end true of	-43
end true only		23
end true only length		23
end true out length		43
end true over	-21
end true says		22
end true the	-28	-40
end true the length		-35
end true to	12
end true up		38
end true up length		38
end true was		-36
form decimal						-15			-17				25	19				25
form decimal area		22
form decimal current		35
form decimal other		27
form decimal pressure		21
form decimal voltage		30
form quarter slope		21
form whole	-26
form whole current		-29
form whole flow		15
form whole torque		30
form whole volume		-17
group one	-27
group one decimal		30		-11		-16			-17				25	19				25
group one decimal area		22
group one decimal current		31
group one decimal other		27
group one decimal pressure		21
group one decimal voltage		30
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
group pair2 quarter		25
group pair2 quarter length		25
group pair2 whole	12			46
group range1	-30
group range1 whole	-30
head # current		26
head # power		-56
head # slope		20
head # volume		-22
head aff		20
head aff length		20
head all		23
head all length		28
head back	-37	18
head back length		18
head board	-31
head bracket	-19
head center		49
head center length		49
head centre		-19
head centre length		-19
head cold		19
head corner	-21
head deep	43			66		30
head done	-26
head gap		22
head gap length		22
head high	11	25				29		35
head high length		24
head higher		21
head higher length		21
head hole		37
head hole length		37
head layer	-24
head long								41
head low		17
head lower		31
head lower length		31
head max						29								19
head nos	-24
head ones		-46
head ones length		-46
head panel	-17
head round		-30
head round length		-30
head run		33
head run length		33
head screw	-22
head shy		25
head shy length		25
head side	-25
head spot	-22
head the	-25
head thick	24					47
head top		30
head top length		30
head tread	-22
head way		-8
head way length		-8
head wide				33		23
headsort # current		26
headsort # decimal		25
headsort # decimal area		22
headsort # decimal current		22
headsort # decimal voltage		30
headsort # one current		33
headsort # one power		-48
headsort # one slope		20
headsort # one volume		-20
headsort # power		-56
headsort # range1	-30	-25
headsort # slope		20
headsort # volume		-22
headsort # whole current		18
headsort # whole power		-45
headsort DET one length		-24
headsort DET whole	-16
headsort OPR		-46
headsort OPR length		-46
headsort OPR one		-46
headsort OPR one length		-46
headsort OPR whole		-46
headsort OPR whole length		-46
headsort Votherp	-20
headsort Votherp one	-20
headsort Votherp whole	-20
headsort Vworkb	-38
headsort Vworkb one	-28
headsort Vworkb whole	-38	-24
headsort Vworkbp		33
headsort Vworkbp length		33
headsort Vworkbp one		33
headsort Vworkbp one length		33
headsort Vworkbpp length		18
headsort Vworkbpp one length		15
headsort Vworkpp	-11	-20
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
headsort goods one	-23	-46
headsort goods one length		-43
headsort goods whole	-24
headsort goods whole length		20
headsort tarea	-24	44
headsort tarea one	-24
headsort tarea whole	-24
headsort tsurface	-21
headsort tsurface one	-28
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
headsort w decimal	57
headsort w pair2	55	47
headsort w pair2 length		47
if false	-25
if false flow		21
if false power		-21
if false slope		26
if false torque		30
if false volume		-29
is false decimal none	33
is false decimal none current		35
is false decimal none length		-22
is false decimal none voltage		25
is false decimal own		48
is false fine part		36
is false fine part length		36
is false fine pointer		40
is false fine pointer length		41
is false fine surface		34
is false fine surface length		34
is false half own		21
is false half own length		21
is false half person		-48
is false half person length		-46
is false quarter material		-24
is false quarter material length		-24
is false quarter part		50
is false quarter part length		52
is false whole area		28
is false whole fixture length		30
is false whole material	-21	38
is false whole material area		43
is false whole material length		29
is false whole none	-41
is false whole none angle		-32
is false whole none area		14
is false whole none flow		-23
is false whole none voltage		-46
is false whole own	-23
is false whole own length		23
is false whole part	-26
is false whole person	-20
is false whole person area		-14
is false whole person volume		-19
is false whole tells		-14
is false whole tells length		-23
is false whole tool		-16
is true fine fixture		-27
is true fine fixture length		-27
is true fine pointer		-18
is true fine pointer length		-22
is true quarter own		34
is true quarter own length		35
is true quarter surface		28
is true quarter surface length		28
is true whole material		24
is true whole material length		24
is true whole none	27
is true whole own	-33	50
is true whole own length		27
is true whole person length		-38
is true whole pointer	-19	-13
is true whole surface	80
mate pair			40
mate pair ft			60
next air									-18
next ask						24
next attic				34
next bad										41	-26
next bar				-23		35
next bedroom									39
next bottom						45
next bracket				53				24
next broken				-18		-37
next call				43											-31							-15
next cap															-20							24
next carpet											36
next changed															-21							23
next check				30					35
next clear				23
next closet				41
next coil				-34					58			36						42
next cold				43		21												-35
next corner				-17		37
next cover				-14
next cut				35
next cut out																	55
next dead				23		37									28
next deep				65									32
next door									36
next drop				47
next dry				-21
next edge						31
next fall						-29
next fan				21
next figure					56
next floor				41	32
next frame									40
next gap						-46						31	34
next garage				-24					41
next glass						31											30
next glue															-17							18
next glued						46
next goes				70
next going				-23		46
next gone				-24
next ground											38
next guy				22
next hair						49
next hanging				42																		28
next head				77						18
next hinge				-20
next hit				28
next hole				32					-15
next house				-19
next hung				-48											36
next joist				81					35		-26			24
next keep						24							27
next keys												-25
next kit					49
next kitchen																				22
next laid				38
next last				30
next leave				-11		-23									28							-27
next left				32
next level				29
next long						30
next loose				-35									24
next low						-17
next make													30
next me						-37
next mud				-47					56			35
next neighbor												29
next new																					22
next old				-16	31				30				21		-25
next one						23
next open				-19
next opening						21
next other				26									14
next packed				-17
next panel													21
next part				37
next pass				62																32
next patch				27																32
next pipe					59	26
next plate				-19					33
next post				17		-31
next pull				60														-10
next pulled						-26						22
next pump				61		-15
next put				23
next ran					52
next read									18									31
next replaced				-25																	41
next reset				-12
next return										21
next round				33		52
next run				50
next sand															21
next says									46					30					46
next screw							35
next seal				-13									39
next see									-20
next short				-22																-20
next side				-53
next spare				34		55
next step				42
next straight				26
next stuck																					49
next stud				48
next swap													42	-20
next take				-22
next tank				-10					39
next tape											20
next tenant					44
next the lady				34
next the wrong								32
next thing										32	18
next think									35		-25
next tile				-20								20
next time												30
next took													32							25
next top				-16		37									22
next trim						19
next truck				47																	25
next tub				46
next use				-12
next used				-36	34
next wall									38
next want				20		30			60
next water				21								26
next way					35										45
next went															33
next wet				37
next wide				-23		32
next work													38
next x				-42																24
not false	-25
not false flow		21
not false power		-13
not false slope		26
not false torque		30
not false volume		-29
not false weight		23
not true	-38	-36
not true length		-30
note			20
note %			16
note C			25
note bar			25
note cfm			67
note cm			26
note deg			14
note in wc			8
note in-lb			42
note micron			23
note ohm			34
note psi			26
note sq ft			55
note sq m			47
noun #	-29	-18
noun # metric										20							40
noun 2 x length		59
noun ^base		28
noun ^base length		28
noun ^bottom		42
noun ^bottom length		42
noun ^deep length		37
noun ^door		47
noun ^door length		42
noun ^floor	27	20		37
noun ^hole	-38
noun ^joist		-14
noun ^joist length		-16
noun ^kitchen	-28
noun ^me	-24	-44
noun ^middle		-10
noun ^middle length		-10
noun ^new		-68
noun ^new length		-77
noun ^panel	-24	37
noun ^panel length		33
noun ^screw		-67
noun ^screw length		-73
noun ^side						42
noun ^tile	-19
noun ^tread	-30
noun ^wall length		20
noun ^wide		30
noun ^wide length		30
noun ^window				53
noun base		29
noun base length		29
noun beam		22
noun beam length		22
noun bottom		52
noun bottom length		52
noun bowl															39
noun ceiling		41						32
noun ceiling length		41
noun closet		24
noun closet length		22
noun code us				31
noun corner		-31				24
noun corner length		-33
noun curb		16
noun curb length		16
noun door	51	39		47		30
noun door length		39
noun edge		32
noun edge length		32
noun filter	-26
noun flange		21
noun flange length		21
noun floor	31			-9																		-17
noun fridge				30		26			-48						33
noun gap		37
noun gap length		37
noun glass		-12
noun glass length		-12
noun hole				46
noun hole us				74
noun house	49			-41	69							25
noun inspector	-38
noun jamb		-19
noun jamb length		-19
noun joint		63
noun joint length		63
noun joist		69
noun joist length		66
noun landing		19
noun landing length		19
noun last	-19	23
noun last length		23
noun leg		-19
noun leg length		-20
noun line		39
noun long	-34
noun me		-33												45
noun me length		-33
noun mirror		57
noun mirror length		57
noun more		-41
noun more length		-41
noun new		-53
noun new none															22
noun niche	22	36		33
noun niche length		36
noun number	-19
noun one		-7
noun opening	29			65
noun opening length		32
noun oven	26								40				38
noun overhang		41
noun overhang length		41
noun paint				-18								32
noun panel	-60			-19		-24
noun plate	-41			-24										22
noun plate us				-25										40
noun post		20
noun post length		19
noun pressure		17
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
noun side us				-17					31
noun slab length		27
noun slide		29
noun slide length		29
noun slider		17
noun slider length		17
noun slope		-19
noun spec	-32
noun stud		54
noun stud length		54
noun supposed	-50			-24	36										-43
noun supposed us				-17	38										-43
noun tile	-35	46		-27
noun tile length		46
noun tile us				-29
noun track		28
noun track length		28
noun unit				18
noun wall						36
noun wall metric						38		13
noun wall none				34
noun wall us												26
noun water		12
noun water length		12
noun window	-31	26		-27
noun window length		26
nounsort #	-29
nounsort # angle		-32
nounsort # area		-16
nounsort # percent		46
nounsort tarea	-32	41
nounsort tarea <12					46
nounsort tarea <2															-17							18
nounsort tarea <3								22
nounsort tarea length		28
nounsort tarea us one					14
nounsort tarea's	-45	19
nounsort tarea's length		17
nounsort tfixture	-22	32
nounsort tfixture <600						53
nounsort tfixture <8				47
nounsort tfixture length		33
nounsort tfixture metric one						64
nounsort tfixture none one									29
nounsort tfixture us one									-14
nounsort tfixture's		-36
nounsort tfixture's length		-36
nounsort tmaterial	-35
nounsort tmaterial <1000						63
nounsort tmaterial <12																			34
nounsort tmaterial <16				-20
nounsort tmaterial <20				62	-22
nounsort tmaterial metric one						50
nounsort tmaterial none one						22
nounsort tmaterial percent		23
nounsort tmaterial us pair2				-19	-21	-20
nounsort tmaterial's	12	44
nounsort tmaterial's length		35
nounsort tmaterial's none one				37		32
nounsort tmaterial's us one				49
nounsort tmaterialVworkb	-23
nounsort tmaterialVworkb <5				39
nounsort tmaterialVworkb length		31
nounsort tmaterialVworkb metric one												28
nounsort tmaterialVworki		38
nounsort tmaterialVworki length		36
nounsort tmaterialVworks		-46
nounsort tmaterialVworks length		-59
nounsort tmaterialVworks us one				29
nounsort tpart <2														26
nounsort tpart <26				-17										20
nounsort tpart <3				29
nounsort tpart <50				59																		28
nounsort tpart <72				-21		-13			60	54												-29
nounsort tpart <8									-22					27
nounsort tpart metric one												35
nounsort tpart none one									59					20							17
nounsort tpart temperature		42
nounsort tpart us one				22					29
nounsort tpart's	14
nounsort tpart's length		15
nounsort tpart's none one													47
nounsort tpart's us one				30					21
nounsort tpartVworkb <5																					38
nounsort tpartVworkb none one				51																	34
nounsort tpartVworkb us one				34																	42
nounsort tpartVworks		55
nounsort trole	-47	23
nounsort trole length		51
nounsort tsurface		32
nounsort tsurface <1000						70
nounsort tsurface <16				57
nounsort tsurface <2				-16	40
nounsort tsurface <26				26
nounsort tsurface <3				-32		-38		30
nounsort tsurface <600						42
nounsort tsurface <8				46												39
nounsort tsurface length		32
nounsort tsurface metric one																17
nounsort tsurface metric pair2				-24		28
nounsort tsurface none one				17		26						31
nounsort tsurface none pair2						41
nounsort tsurface pressure		26
nounsort tsurface temperature		-19
nounsort tsurface us one				-18					27
nounsort tsurface's	39	39
nounsort tsurface's length		39
nounsort tsurface's none one				33						14			-18		24
nounsort tsurface's us one				47	-27				-9		27	45			42
nounsort tsurfaceVotherb		37
nounsort tsurfaceVotherb length		37
nounsort tsurfaceVworkb none one				33
nounsort tsurfaceVworkb us one														40
nounsort tsurfaceVworki		54
nounsort tsurfaceVworki length		35
nounsort tsurfaceVworks	-20	62
nounsort tsurfaceVworks length		62
nounsort ttool	-35	-16
nounsort ttool length		40
nounsort ttool us one				-17						54
nounsort ttoolVworkb		75
nounsort ttoolVworkb length		76
nounsort w	-22
nounsort w <100						26			-26										10	28
nounsort w <1000						-39
nounsort w <130									47				-32
nounsort w <16																			30
nounsort w <2				25
nounsort w <20				53
nounsort w <26													59									-20
nounsort w <32												-14		39
nounsort w <40						30
nounsort w <50					-20				48					29
nounsort w <60									32
nounsort w <72				29					38						24
nounsort w <8				-20	28
nounsort w area		23
nounsort w both one						27								45				23
nounsort w current		-68
nounsort w metric one						24											21
nounsort w other		-55
nounsort w percent		-6
nounsort w pressure		28
nounsort w us one				27
nounsort w us pair2				-31
nounsort w's		-9
nounsort w's none one						36			23									27
nounsort w's us one						-27			20		38
nounsort wed	-48	32
nounsort wed length		33
nounsort wed us one				-17	36										-40
nounsort wing		41
nounsort wing length		41
nounsort wly length		53
open  angle		24
open  area		26
open  current		-28
open  flow		18
open  percent		64
open  power		-8
open  slope		25
open  torque		28
open  volume		-44
open -	-49	30
open - length		36
open also	-35
open because	-10
open like		63
open like length		62
open now	49
open okay	-42	29
open so	-31
open then	-45
own aff		20
own aff length		20
own air		35
own anything		-28
own anything length		-28
own asked	38					25														24
own attic		56
own attic length		59
own b	-51			-31
own b us				-32
own baluster		27				36
own baluster length		27
own bar	-28					-25									-21	73
own bar metric						-35										90
own base	-15	31
own base length		31
own bath								20		13
own bathroom length		-11
own bay	-43			-21
own bays	-26
own beam		44
own beam length		44
own bed	-29
own bedroom	-17	38
own bedroom length		40
own bent	-21
own better	-47
own big	-15
own bit		-31		17								32
own bit length		-31
own black									36
own black us				-16					39
own blind	-22
own block	-39	31
own block length		30
own board	-32	-26
own board length		-29
own bolt	-37
own bolted						23
own book	12	48		43
own book length		48
own book us				43
own bottom	-23					19							21
own bottom none						36
own bottom us													27
own bowed		57
own bowed length		57
own bowl															36
own box	-51			-16
own box <8																						-27
own box none				-11					-16
own box us				-17
own boxe	-23	-26
own boxe length		-26
own br	-41
own bracket		44				26
own bracket length		42
own bracket none						26
own brick		42
own brick length		42
own bring	-33	-43												32
own bring length		-19
own bring us														33
own broke	-37			-12
own broke us				-14
own broken	-35
own buy		29
own buy length		29
own cabinet	-24	-10
own cabinet length		-10
own cable		81
own cable length		81
own call				33										32
own call us				35										34
own cap				23					-27		-22										64
own cap us				29					-18												42
own carpet		-21
own carpet length		-21
own casing	-19
own cast		17
own cast length		17
own ceiling				33				24
own ceiling <3				25				33
own ceiling none								33
own ceiling us				27
own center				27
own center us				27
own centre	19	-14				66
own centre length		-11
own chipped	-22
own circuit	-41	-34
own circuit current		-17
own clean	-18
own clear	-20	37		-9
own clear length		39
own clear us				-9
own clearance		35
own clearance length		35
own closet	58	27		62	25
own closet length		26
own closet none				21
own closet us				57	31
own coat	-31
own code		-11																		37
own code us																				38
own cold	-29	37							21
own cold us															34							-35
own coming															56
own coming us															59
own copper		-52
own copper length		-52
own corner	-28	20										23
own corner length		19
own corner us												30
own count	-71
own counter		46
own counter length		46
own course		-29
own course length		-29
own cover	-39	-38		-32
own cover length		-49
own cover us				-35
own crack		53
own crack length		53
own cracked	-24	48
own cracked none				-18		19
own crown		24
own crown length		21
own curb		21
own curb length		21
own cut	22	24					18										24
own cut <2				-18
own cut <3				-14		-13
own cut <5								33
own cut length		31
own cut metric				-26		38	45	21									46
own cut out		31
own cut out length		27
own dead	-21
own deep	12				23	25
own deep <12				28		-21	28
own deep metric						42	26
own deep us					30
own different	28			44
own door		28
own door <5												35
own door length		36
own door metric						52
own door none						25
own double	-24
own drain				40
own drain us				44
own drawer	-22	32
own drawer length		32
own drawing		55
own drilled	-19			-16
own drilled us				-20
own drip	-41
own drop	-57			-14									13
own dropped		50
own dropped length		50
own dry	-38
own drywall		53
own drywall length		31
own duct		24
own edge	-30
own edge length		35
own end	-38	37
own except	-18								-18
own face		79
own face length		44
own fall		-38
own fall length		-55
own fan	-35								21			-26										28
own far				23
own filler		19
own filler length		19
own filter	-29
own finish	-19	-22
own finish length		-23
own first	-29
own flange		26
own flange length		26
own flat		55		30
own flat length		55
own floor				45
own floor none				57
own floor us				36																		-17
own footing	25	32		57
own footing length		32
own footing us				57
own found	37	36		-12
own frame	-24
own fridge				29		28			-47						32
own front	-44
own front length		53
own full	-18
own gap	57	49		52		51
own gap length		49
own gaps		89
own gaps length		89
own garage	21	29		32					-13			37
own garage us												43
own gas length		-23
own gate		43
own gate length		43
own gauge		34
own gave		-30
own get	-13	-33
own get length		-18
own get none									23
own get us													25
own glass	23	-47											34
own glass length		-47
own glass us													36
own glue	-36	-12
own glued	-14	-44
own glued length		-48
own go				26
own go length		21
own go us				31
own goes		-14
own goes length		-19
own goes us				30
own going	42	52				80									18							-19
own going length		47
own gone	-16					25
own grab	-29
own gray				32
own ground		60
own guy	-30
own hair		-29
own half		-53
own half length		-25
own hall	-46	30
own hall <5									33
own hall length		26
own hall us									31
own hallway		27													-23							20
own hand	-21
own hand none									20
own handrail		60		21		39
own handrail length		60
own handrail none						47
own hang				34
own hanger	-20
own hanging				18
own head	-28
own header		19
own header length		19
own hearth		38
own heat	-35
own heater		-62
own held															51							-49
own held us															53							-51
own high	32	37				53		30
own high length		38
own high metric						28
own higher		21
own higher length		21
own hinge				23
own hinge us				29					-18
own hold		25
own hold length		20
own holding	40								66						30	38
own holding us															45
own hole		37		54
own hole <3				16		-25
own hole <5				-12
own hole length		37
own hole metric				-33		47
own hole none				60		-16
own hole us				61
own hollow						32
own hot		26
own house	18			-11	46										14					18
own house length		-36
own house none															29
own house us				-9	55															24
own hung		-7
own inspector		45		40
own inspector length		45
own inspector us				39
own instead	23			38
own instead us				38
own itself				19		28
own joint	-54	19		-46
own joint length		19
own joist		26										40
own key	-22
own kitchen	-47
own kitchen us				-23
own l		37
own land		24
own land length		24
own landing		21
own landing length		21
own last	-22			27
own last length		31
own last us				36
own layer	-21
own lean		38
own lean length		38
own leave	-33	29
own leave length		29
own left	31	28		44		22										19
own left metric																39
own left none				36		39
own left us				40
own leg	9												39
own leg none													43
own length		-43
own length length		-43
own light	-32	41
own light length		43
own line		29
own line length		10
own little	-11														58
own lock	-25					-19							59									-18
own long				48				25
own long us				62
own loop		42
own loose	-23
own low		27													-24							22
own low length		24
own lower		68
own lower length		66
own make		-7		-20					33
own make length		-7
own make us				-23
own mark	-16
own marked		22
own marked length		22
own max	-24			-21		25								21
own me	-26													25
own measure		49
own measure length		45
own measured	41	33																		59
own measured length		28
own measured us																				65
own meter length		-23
own mid		44
own middle	-29	55		34					-23
own middle length		55
own mirror		57		25
own mirror length		57
own mirror us				26
own missing	-48
own missing us				-17
own more	-29	-18
own more <2				28
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
own need length		-19
own need metric								25
own need us				36
own new us																						17
own niche	22	-12		33
own niche length		-12
own nos	-24
own nosing		-10
own nosing length		-10
own number	-30	39
own number length		42
own oak	-49
own oc		24
own oc length		24
own old	-22
own old us				-13
own one	36	-7										-25		45
own open	-21																					13
own open us				-44											-14							16
own opened	-41			27
own opening				48																		18
own opening us				27											-20							24
own order	-30	-18
own order length		-18
own other													15
own other none													31
own out of plumb		29
own out of plumb length		22
own outlet	-22			18
own oven		14				-22			35				33
own overhang		49
own overhang length		49
own pad		70
own paint		-46										22
own paint length		-46
own paint us				-19
own pane	-17			-15
own panel	-27
own pantry	-20	28
own pantry length		28
own paper	-22
own patch	75			54
own patch us				63	-9
own pick	-13
own picked	-43			-18		-17
own piece				45
own piece us				48
own pipe		-19														31
own pipe length		-21
own pitche		30
own pitche length		30
own pitched		40
own pitched length		40
own place	-20	36
own place length		36
own plaster		52
own plaster length		41
own plate	-40													17
own plate us				-23										38
own plug		-39
own plugged	-13
own plumb		-37
own plumb length		-37
own ply		-39
own ply length		-39
own plywood		-18
own point	-34
own post	-19	24									24
own post length		24
own post us											29
own pressure	59	23		-27		-24									85	27	31
own pressure pressure		20
own proud of		57
own proud of length		57
own pull		71													-30							31
own pull us															-32							34
own pulled		29
own pulled length		14
own pulling		19
own pump		53
own put		-40				-18									51
own put length		-28
own put us															69							-32
own rail				20
own rain	-34
own ramp	-9
own ran	-14
own range		-34		-16										43
own range length		-34
own rated																					29
own read	27	19		-24								40	31	-24					24		42
own read none													29	-26							63
own read percent		47
own read us				-32								42							24
own reading	31	42		-22						23	-28	35	39					18
own reading none				-14								46	54	-18
own red																			38
own rest		-26
own rest length		-33
own return	-37	31							23
own return us									31
own reveal		50
own reveal length		50
own rigid		-27
own rigid length		-27
own ring		29
own ring length		28
own rip		35
own rip length		35
own ripped		34
own ripped length		34
own rise	25					32			39
own rise none						36
own riser		51		-19		36
own riser length		51
own room		22										-17
own rotted				-16	-25				40
own rough opening		29
own rough opening length		29
own round	23					38
own row	-20
own run		48			22									29
own run length		42
own run us				26	30
own running									27		-34
own running length		-18
own runs	-33	51
own runs length		51
own s	-27
own sags		23
own said	28								-38	54		54										-32
own said us									-38	56					31							-33
own salon	-20														-14							18
own sand	-49
own sanded	-76
own say		55				17
own say length		39
own says	-21
own says <16												27
own says length		-19
own says us				22					19
own screw		-28
own screw length		-25
own screw us				21
own seam		40
own seam length		40
own see	-25	23
own see length		23
own sent				32
own sheet	-28
own shelf				34		28
own shelf us				42
own shop	-43	38		-26
own shop length		38
own short	-25				30
own short us					35
own shot	-17
own shy		36
own shy length		36
own side		37		24
own side <5				36
own side length		39
own side metric						18
own side none				34		19
own side us				19
own sill		35
own sill length		35
own sink		32													25
own sink length		29
own sink us															27
own sit	-48	32				-34
own sit length		32
own sitting		43													35							-35
own sitting length		45
own sitting us															35							-35
own slab	-19
own slab length		36
own slate	-27
own slider		32
own slider length		32
own slope		27
own slope length		24
own snaked		51
own snaked length		51
own spacing		24
own spacing length		24
own spec	-32
own spin	-25
own split	-33	66
own split length		66
own spot										31
own sprayed	-35
own spring	18			-18							54
own stain	-26
own stair		37				25
own stair length		37
own standing		27
own standing length		27
own start	-31								33
own static		25
own static pressure		21
own step		29		29
own step length		72
own step none						29
own step us				42
own stick		-42
own stick length		-33
own stile		-10
own stile length		-10
own stone				19
own stop		-36
own strip		-33
own stripped	-21
own stud	-34
own supposed	-52			-25	34										-41
own supposed us				-18	37										-41
own swapped		-94
own take	-25			-23		22							29
own tall	28			16	52
own tall us				16	52
own tap		-71		-23		44			62	25
own tap us				-14		32			61
own tape	-23			-16
own temp				-14					53	24
own test		50
own tested	52															43				32	44
own thermostat				-18					60
own thick	20	17				45
own thick length		17
own think		41
own tile	-64			-28		-15
own tile metric						-39
own tile none				-43
own tile us				-17
own time	-28	-39				-25										33
own time length		-39
own time metric						-32
own toilet		26
own too deep		26
own too deep length		26
own too high		25
own too high length		25
own took	-15	21
own took <5				43
own took length		18
own took none				39					31
own top	37	33		56		34
own top length		26
own top none				24
own top us				62
own torqued		15
own torqued torque		15
own total	18					35								20
own track		33
own track length		33
own trap		52
own trap length		56
own trap us				20
own tread	-33	31
own tread length		31
own tub length		33
own tube		-56
own tube length		-56
own turn	-21								20
own turn none									28
own turned									-24		34
own unit	-40	32		26
own unit length		27
own unit us				34
own upstair				34
own upstair us				39
own us length		34
own used	-23	-33		-12
own used us				-14
own valve	17			35
own vinyl					-24				39
own vinyl us					-24				39
own vs		59
own wall		28
own wall <3						-31
own wall length		29
own wall metric						30		9		30
own wall none										25
own wall us				28
own want		27
own want <16				45											52
own want <40				-15		30			43
own want <5																29
own want length		39
own want metric																27
own want none										22
own wanted	-20
own wanted us				37
own washer				42					-19
own waste length		-25
own water		69		-17					67
own water length		62
own water us				-18					72
own way				33
own way us				36
own went	-11			22																18
own went none				42
own went us																				25
own wet		58
own wet length		43
own white	-20	-54
own white length		-54
own wide				33		19
own wide us				22
own window	-25	31
own window length		32
own window metric						25
own window us				-19
own wood		58
own wood length		38
own wrong	-18
own x none						36
prev air		72													34
prev attic	33	41							33												34
prev attic length		41
prev attic on					-26				35												36
prev bad		-15
prev baluster		27		36		22
prev baluster length		27
prev baluster on				36		22
prev bar						21
prev base	-36
prev basement	30	43		45
prev basement length		43
prev basement on				45
prev bath	-26	-15		27					-24						15
prev bath length		-30
prev bath on															20							-18
prev bathroom	-36	34
prev bathroom length		35
prev bed	-44			-12	-33	38
prev bedroom	36	-40			46
prev bedroom length		-46
prev bedroom on					48	12
prev bent		55
prev bent length		55
prev black		-27
prev black length		-29
prev blind		-31
prev blind length		-31
prev block		-46
prev block length		-33
prev board	-45	-23				-26
prev board length		-26
prev board on						-27
prev bottom		45										19					29
prev bottom on												21					32
prev box				-17	38														32
prev box length		16
prev box on				-17	38														32
prev bracket	-18										40
prev bracket length		-31
prev bracket on											43
prev bring		39
prev bring length		39
prev broken		31
prev buy		-52
prev call		-13																	49
prev call length		-13
prev carpet		47
prev carpet length		42
prev ceiling	-43			-17
prev ceiling on				-18
prev center		14
prev center length		14
prev check		31
prev check length		31
prev checked		49
prev chimney		21
prev chimney length		19
prev clean		21
prev cleaned	19								33
prev clear		25
prev clear length		25
prev clear on				25
prev closet		16										27
prev closet on												30
prev coat				37					-13
prev concrete	-43	21
prev corner		53		26		-15
prev corner length		52
prev corner on				35		-17
prev count	-35
prev cover	-19	45		-14
prev cover length		45
prev crack		25
prev crack length		25
prev crown		25
prev crown length		33
prev curb		9
prev curb length		21
prev cut	22	41
prev cut length		39
prev cut on						24					14						18
prev day		-23
prev deck		53		27
prev deck length		53
prev deep	32			51					28
prev deep length		31
prev deep on				51					28
prev dining room		57									45
prev dining room length		58
prev dining room on											47
prev door	-45	34
prev door length		31
prev drain		-42
prev drain length		-32
prev drop	-43	37		-19
prev drop length		24
prev dry	-32	54										21
prev dry length		42
prev dry new										32
prev dryer				-15									47
prev dryer on				-15									47
prev drywall		21
prev duct	14			42																33
prev duct on				42																33
prev dug		70
prev dug length		70
prev end		51
prev end length		52
prev enough		67											34
prev enough length		44
prev enough on													34
prev except		-6
prev face		-38
prev fan	62	-75			47							35								12
prev fan on					47							35								12
prev faucet		-6
prev faucet length		-11
prev fence				47								12
prev fence on				50								13
prev finger		18
prev finish	-45	-42		-7
prev finish length		-54
prev first	-39	42										-26
prev first length		41
prev first on						17						-27
prev flat				-16		11
prev flat length		27
prev flat on				-16		11
prev floor	-27			36					-21
prev floor on				43
prev flush		-34
prev flush length		-34
prev foam		54
prev foam length		54
prev found		38		31
prev found length		38
prev found on				31
prev frame		76
prev frame length		76
prev fridge	55				73				-21						23
prev fridge on					73				-21						23
prev front	-43	-16
prev front door		26
prev front door length		26
prev front length		-36
prev gap		60				24
prev gap length		60
prev garage	-36	-10
prev get		-19										31
prev get new											34
prev get on				22								38
prev glass	29	23		41		35
prev glass length		23
prev glass on				41		35
prev glue		-40
prev glue length		-28
prev glued	-22
prev glued length		-30
prev go						24
prev go new						22
prev go on				30									25
prev goes	-24			-16
prev goes on				-17
prev going	-46					-21		33							-28
prev going on						-21		33							-28
prev gone									-21		-18
prev gone on						18			-26		-22
prev guy length		28
prev gym		54
prev hall		-21				22			-28		-20
prev hall on					-33	25			-32		-23
prev hang				42
prev hang on				42
prev hatch length		46
prev head		45										33
prev head length		45
prev height		67
prev height length		67
prev held									28									28
prev high	17					47
prev high on						47
prev hinge		-17							-33	-27
prev hinge on									-40	-32
prev hits		43
prev hits length		43
prev hold		41							56
prev hole		59		27		43
prev hole length		59
prev hole on				32		45
prev house	-30	68
prev house length		69
prev house on																						-41
prev hung		39		54
prev hung length		38
prev hung on				58
prev inspector				40
prev inspector on				40
prev island	30					23									28
prev island on						24									29
prev jamb		24
prev jamb length		24
prev joist		-14
prev joist length		-15
prev kitchen	-30
prev kitchen length		-12
prev know						37
prev laid		36
prev laid length		30
prev last	-17	40
prev last length		37
prev latch		38
prev latch length		38
prev laundry		16
prev leak		22
prev leak length		24
prev leave		-22
prev leave length		-22
prev ledger		-18
prev ledger length		-18
prev left		32		-12	28					23		19
prev left length		30
prev left new				-16					-22	38	-26	31
prev left on					40
prev lid		19
prev light		41
prev light length		56
prev line	18			-26	28				36
prev line length		-21
prev line on				-27	28				38
prev living room		30
prev living room length		41
prev long		65							15
prev long length		50
prev long on				31
prev look	-18
prev loose	-30								25
prev loose on									28
prev lot	-24
prev low		66											38
prev made				21			26
prev make		32
prev make length		27
prev me		-22
prev me length		-18
prev measure		44
prev measure length		44
prev measured	37	70		39		-13
prev measured length		70
prev measured on				40
prev meter									-17			25	45							-42
prev meter on									-17			25	45							-42
prev missing	-34	17
prev missing length		17
prev more	-33	34						26
prev more length		33
prev more new								36
prev more on				32
prev move		50
prev move length		50
prev mrs	26					52
prev need		-28
prev need length		-35
prev need new						26		31
prev new	-39			-16									19
prev new length		-30
prev new on				-19									28
prev number	-60	33		-28
prev number on				-28
prev oak	-52	63		-39		17			-18			51
prev oak on				-39		17						51
prev old	-30	65							28			-20	24
prev old length		69
prev old on									28			-20	24
prev open		45
prev open length		71
prev opening		-10
prev opening length		-10
prev order	-77	-99		-20
prev order length		-90
prev order on				-22
prev outlet		-14
prev oven						27
prev paint	-37
prev panel		49		42
prev panel length		54
prev pantry		54
prev pantry length		54
prev patch		45
prev patch length		71
prev piece		-25
prev piece length		-25
prev pinned		37
prev pinned length		37
prev pipe	22	43				58
prev pipe on						60
prev place	-52			-19
prev place on				-19
prev plaster		58
prev plaster length		58
prev plug		44
prev plug length		44
prev plumb		40
prev plumb length		40
prev plumber	35	28		33													39
prev plumber length		25
prev pressure	55								-20	29					55	28						-37
prev pressure on									-21	30					57	29						-38
prev pull		32
prev pull length		28
prev pulled				-19								-29		39				30
prev pulled length		-23
prev pulled on				-19								-29		39				30
prev put		-25		-25								33			29
prev put length		-68
prev put on				-28								36			32
prev rail	44			61
prev rail on				65
prev ran	-17	-30							-13						36
prev ran length		-33
prev ran on									-13						36
prev range		48
prev raw	40			22								40
prev read	-36	-81		-13					-25				25
prev read on				-13					-25				25
prev replaced				-15
prev replaced length		-18
prev reset		-16
prev return	-33
prev rise		33		-28		21
prev rise length		33
prev rise on				-28		21
prev riser		25
prev riser length		35
prev rm	-48			-13					30
prev rm on				-11
prev roll		40
prev roll length		40
prev roller	-67			-27
prev roof	-42	-46							31
prev roof on									32
prev room	27											34
prev room length		35
prev room on												34
prev round		-17				48
prev round length		-17
prev round on						48
prev run		35							37													-42
prev run length		28
prev run on									40													-45
prev runs		33
prev salon		44
prev sand	-40
prev says	-22	-48
prev says length		-58
prev screw	43	-15		49
prev screw length		-20
prev screw on				57
prev screwed		-48				50
prev screwed length		-33
prev screwed on				58
prev sealed																				34
prev seam		32
prev seam length		38
prev second	-45	-19		-27
prev second coat	20									54
prev second length		-19
prev second on				-27
prev see		-47		-11								35
prev see length		-47
prev see on												37
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
prev shop	-52	-44
prev shop length		-53
prev short	-74			-16		-19
prev short on						-20
prev shower		79
prev side	30				41	30
prev side on					45	36
prev sink															18
prev sink on															27
prev sit		47
prev sits		-22
prev sits length		-22
prev sitting		35
prev sitting length		34
prev slab	40	22		35		34
prev slab length		22
prev slope		-86				-28	27
prev smoke	-54					-27
prev smoke on						-27
prev split		-31
prev split length		-31
prev squeak		-34
prev stair	26	61		25		27						23
prev stair length		61
prev stair on				28		31						25
prev start		-28
prev start length		-39
prev step		62				29
prev step length		62
prev step on						30
prev stop		-20
prev stop length		-20
prev straight		-19
prev straight length		-35
prev supply										19
prev supply on										19
prev supposed		31
prev supposed length		31
prev swap		-28
prev swap length		47
prev swapped	11	48							22						21					31
prev swapped length		24
prev sweep		55
prev sweep length		55
prev swing		29
prev swing length		29
prev take	36	28		33					-14
prev take on				33					-14
prev tap	-24
prev tape	29			54
prev tape on				20
prev taped		23		22
prev taped length		34
prev tell		24
prev tell length		27
prev temp									24
prev temp on									21
prev test	-92
prev the wrong		-35
prev thermostat									55
prev thermostat on									57
prev tile	-22					22
prev tile length		-19
prev tile on						25
prev toilet		32
prev toilet length		31
prev told		26
prev took									26					37
prev took on									29			-22		40
prev total	-41
prev track		48
prev track length		48
prev trim	-67	43		-14
prev trim length		43
prev truck	-15													48
prev truck on														50
prev tub		68
prev tub length		68
prev turned	18				22															27
prev turned on					23															28
prev unit	-65	33		-15		24
prev unit length		28
prev unit on						27
prev upper	26	53		42
prev upper length		27
prev upstair																		32
prev upstair on																		32
prev used	-64	-14		-38
prev used length		-16
prev used new				-49							34
prev valve	63	-55			55										29
prev valve on					55										29
prev vent	-24	49																		22
prev vinyl		60
prev wall	-24				13				-22		17
prev wall new				-11							21
prev wall on					17				-20		12
prev want				18		27
prev want on				19		29
prev washer				16
prev water	-36
prev way		69																		20
prev way length		57
prev way on																				20
prev went	-39
prev wet		34										32
prev wide	17	-26		18								36
prev wide length		-26
prev window	12			59
prev wire		48
prev wrapped		-32
prev wrapped length		-19
prev x	-61			-53															43
prev x on				-56		17
prev2 air										27
prev2 attic																					30
prev2 base					46
prev2 basement						35									-21							21
prev2 bath									-29
prev2 bathroom				37
prev2 board				28
prev2 bottom						24				33
prev2 bracket						23
prev2 breaker													22	14
prev2 bring										13
prev2 ceiling																				25
prev2 closet				-11											27
prev2 corner				27
prev2 cut				-21		14						25
prev2 day				-11								15
prev2 dead				-40		-29			43
prev2 deep				35
prev2 door				-23								23
prev2 drain						-15									37
prev2 drop				-14											-40
prev2 dry				17
prev2 dryer													47
prev2 end				-11
prev2 finish				40					-27	38	-28
prev2 first				-17					-20	29			35
prev2 flat				-65											20					59
prev2 floor						-26			-29			28
prev2 found									22									29
prev2 front				-20
prev2 gap				50
prev2 garage				-7								-23		39
prev2 garden						20
prev2 get				21
prev2 glass						10
prev2 going				-8		20
prev2 gone						-35										37
prev2 hall				-27																	32
prev2 hang				25
prev2 hard				20
prev2 high				-44					13
prev2 hole				-29
prev2 hose				77
prev2 hot				-27					20
prev2 house						-25			27
prev2 hung				36		21
prev2 island				40
prev2 joist						32
prev2 kitchen																28
prev2 landing				41
prev2 last				-13		-18						39				36
prev2 leak									27
prev2 leave				-20														36
prev2 level				-17
prev2 long						-16
prev2 loose				-28
prev2 master				-21
prev2 me				33
prev2 measured																				-24
prev2 microwave													45
prev2 middle														40
prev2 missing				-26		-13
prev2 more				-16									30					31
prev2 nail				-14
prev2 need				-16					19
prev2 new																	19
prev2 number				27
prev2 oak				37								24
prev2 old				53		23
prev2 opening				32
prev2 other												-25
prev2 p									-16	34	-28		24
prev2 packed				35														36
prev2 painted						33
prev2 panel				21									31
prev2 pipe																44
prev2 plumber				46		-19				37					27
prev2 post						30
prev2 pulled				16					-21	33								23
prev2 put															24
prev2 radiator				41
prev2 replaced				-23					28				-21
prev2 return				-28					-12						29						42
prev2 rise				30		-21		43
prev2 room						-16
prev2 run												25
prev2 salon											42
prev2 sand				53
prev2 says				53
prev2 screen				45					21
prev2 screw				37		17
prev2 scribed						51
prev2 second				-21		-21	27
prev2 see				33
prev2 short															43							-44
prev2 side				23
prev2 sits						27
prev2 sitting				14													42
prev2 slab												36			32
prev2 stair				-16		53
prev2 step								38
prev2 stud				35
prev2 swapped									25
prev2 tell													32
prev2 thing				42
prev2 tile						-35
prev2 time									-23				33			43
prev2 took				-22
prev2 top																	36
prev2 tread						38						24
prev2 trip														31
prev2 truck				19
prev2 valve				21					42						36
prev2 wait				61
prev2 wall												21		18
prev2 want				20															28
prev2 water				-20		28
prev2 went				-25					27			25
prev2 wet												78
prev2 window				-64
prev2 x				-18		21
read earlier %			35
read earlier V			19
read earlier cfm			58
read earlier in wc			-39
read earlier lb			42
read last			36
read last %			33
read last 0			71
read last 0 V			37
read last 0 ft			37
read last 0 ohm			48
read last 0 psi			18
read last 1			68
read last 1 %			37
read last 1 A			42
read last 1 F			32
read last 1 V			51
read last 1 in			28
read last 1 lb			37
read last 1 m			6
read last 1 mm			55
read last 1 ohm			42
read last 1 psi			43
read last 1 sq ft			64
read last 1. in			42
read last 1. mm			-30
read last 2			20
read last 2 %			31
read last 2 F			12
read last 2 mm			-25
read last 2 psi			63
read last 2. in			39
read last 3 F			52
read last 3. F			17
read last 3. V			-20
read last 3. mm			12
read last 3. psi			24
read last A			18
read last F			37
read last V			34
read last bar			30
read last bare 0			89
read last bare 0 V			35
read last bare 1			85
read last bare 1 F			45
read last bare 1 mm			55
read last bare 1. in			36
read last bare 2			83
read last bare 2 F			12
read last bare 2 in			95
read last bare 3 in			-23
read last bare 3 mm			21
read last cfm			45
read last in wc			27
read last lb			11
read last lux			116
read last mm			23
read last ohm			59
read last psi			72
read last said 0			55
read last said 0 ft			47
read last said 1			59
read last said 1 %			45
read last said 1 A			18
read last said 1 V			19
read last said 1 cfm			6
read last said 1 in			26
read last said 1 lb			37
read last said 1 m			6
read last said 1 mm			37
read last said 1 sq ft			64
read last said 1. in			32
read last said 1. mm			-23
read last said 2 in			-32
read last said 2 mm			-25
read last said 2 psi			50
read last said 3. ft			-24
read last said 3. mm			20
read last said 3. psi			18
read last same noun			32
read last same noun ft			54
read last sq ft			35
read last subject area 2			-28
read last subject fixture 0			34
read last subject fixture 2			16
read last subject material 0			19
read last subject material 0 mm			-38
read last subject material 1			46
read last subject material 1 in			55
read last subject none 0			36
read last subject none 0 ft			39
read last subject none 1			94
read last subject none 1 %			21
read last subject none 1 F			22
read last subject none 1 V			41
read last subject none 1 mm			46
read last subject none 2 F			50
read last subject none 2 psi			97
read last subject own 0			81
read last subject own 1			31
read last subject own 1 in			27
read last subject own 1 mm			36
read last subject own 2 mm			46
read last subject person 0			70
read last subject person 0 ft			-19
read last subject person 0 in			-11
read last subject person 0 mm			49
read last subject person 1			56
read last subject person 1 F			45
read last subject person 1 in			36
read last subject pointer 0			22
read last subject pointer 0 ft			31
read last subject pointer 1			15
read last subject pointer 1 in			-13
read last subject pointer 2 mm			-19
read last subject surface 0			30
read last subject surface 2 in			46
read last subject surface 2 mm			29
read last subject tells 0			55
read last subject tells 1			71
read last subject tells 1 A			8
read last subject tells 1 in			30
read last subject tells 2			-18
read last uF			22
read last w-1 # in			-33
read last w-1 # sq ft			34
read last w-1 a in			-19
read last w-1 all			-34
read last w-1 all in			-17
read last w-1 and			39
read last w-1 are			64
read last w-1 at			29
read last w-1 at in			58
read last w-1 be			62
read last w-1 be in			60
read last w-1 by ft			46
read last w-1 by in			-23
read last w-1 for			33
read last w-1 got ft			-22
read last w-1 got in			24
read last w-1 have			34
read last w-1 have in			30
read last w-1 is			39
read last w-1 is mm			54
read last w-1 it			-36
read last w-1 it's			-11
read last w-1 needs			69
read last w-1 needs in			46
read last w-1 not			-33
read last w-1 of			-20
read last w-1 of in			-18
read last w-1 on			-17
read last w-1 on in			-16
read last w-1 only			61
read last w-1 other			-15
read last w-1 other in			-14
read last w-1 out			22
read last w-1 says			45
read last w-1 says F			22
read last w-1 says in			46
read last w-1 the			-17
read last w-1 to			117
read last w-1 to in			50
read last w-1 to psi			82
read last w-1 under			71
read last w-1 under %			43
read last w-1 want			63
read last w-1 wants			109
read last w-1 wants in			58
read last w-1 was			67
read of same noun			25
read of same noun ft			54
s # COP	-23
s # PREP		34
s # Vworkb		32
s # tarea	-33
s # tdefect	-25
s # tfixture	-25
s # tmaterial	-25
s # tsurface	-32
s # w		-11
s CONJ w	23	21
s CONJ w length		21
s COP #	14
s COP PREP		20
s DET #	-23
s DET PREP	-42	-42
s DET PREP length		-42
s DET tfixture	-17
s DET tpart	-14
s DET tsurface		26
s DET tsurface length		26
s DET w	-18	23
s DET w length		25
s M- #	-27
s NEG #	-48
s PREP # angle		-11
s PREP # area		19
s PREP # other		30
s PREP CONJ length		11
s PREP PREP	16
s PREP Vworks	-15
s PREP tmaterial	-24
s PREP tpart	-14
s PREP tsurfaceVworkb	-18
s PREP w		-14
s PREP w length		-20
s PRON #	-27
s PRON # length		60
s PRON PREP length		61
s PRON tdefect		34
s PRON tdefect length		34
s Q0 #	-31
s Q0 w	23
s Vhaveb #	17
s Vhavepp #	-33
s Vmeasurei #	44
s Vmeasurei PREP		19
s Vmeasures #		19
s Vmeasures w		19
s Vneedb #	-21
s Vneeds PREP		20
s Votherb #	22	16
s Votherb # length		20
s Votherb PREP	36
s Votherp PREP	35
s Votherp w	-39
s Vsayb #		23
s Vsays #		22
s Vsays PREP	-13
s Vworkb #	-47	25
s Vworkb # length		21
s Vworkb PREP	32	71
s Vworkb PREP length		71
s Vworkb w	-60
s Vworkbpp #	9	28
s Vworkbpp # length		28
s Vworkbpp PREP		-7
s Vworkbpp w		16
s Vworkbpp w length		16
s Vworki #		52
s Vworkpp #	-35
s Vworkpp PREP	-26
s Vworkpp w		33
s Vworkpp w length		33
s tarea #	-21	46
s tarea # length		47
s tdefect #		48
s tdefect # length		43
s tdefect PREP		30
s tdefect PREP length		30
s tdefectVotheri PREP		57
s tfixture #		34
s tfixture # length		34
s tfixture w		15
s tfixture w length		15
s tmaterial #	-48	-29
s tmaterial # length		-29
s tmaterial PREP length		54
s tmaterial w		89
s tmaterial w length		71
s tpart # length		-32
s tpart PREP		21
s tpart PREP length		21
s tpart w		35
s tpart w length		35
s tpartVworks PREP		44
s tsurface #	21
s tsurface PREP	20	32
s tsurface PREP length		32
s tsurface w		-23
s tsurface w length		-40
s tsurface's #	40
s tsurfaceVworkb #		29
s tsurfaceVworkb # length		29
s tsurfaceVworki #		35
s w #	-31
s w # length		32
s w # temperature		-24
s w CONJ		-29
s w CONJ length		-29
s w PREP length		30
s w tdefect	-21
s w tpart	-20
s w w	-21
s w's PREP		43
s w's PREP length		43
s wly #	13	29
s wly # length		29
s wly PREP		-23
s wly PREP length		-23
s wly w		30
s wly w length		30
s+1 # <0.1 length		33
s+1 # <0.6	-34
s+1 # <1		-14
s+1 # <1 length		-21
s+1 # <100	-53	70
s+1 # <100 length		73
s+1 # <1000		49
s+1 # <115	-25	38
s+1 # <130	-47
s+1 # <160	22	47
s+1 # <2	-62
s+1 # <20		13
s+1 # <200		51
s+1 # <26	-39
s+1 # <26 percent		45
s+1 # <260	21	33
s+1 # <3	-29	-15
s+1 # <3 length		-9
s+1 # <3000	-34
s+1 # <32	22
s+1 # <32 length		39
s+1 # <40		45
s+1 # <400		40
s+1 # <50	-32	13
s+1 # <600	22
s+1 # <72	10	60
s+1 # <72 length		28
s+1 # <8	-39
s+1 # <85	9	-16
s+1 # decimal		33
s+1 # decimal length		18
s+1 # pressure		31
s+1 # volume		-18
s+1 CONJ <0.6		-42
s+1 CONJ <0.6 length		-51
s+1 CONJ <12		-37
s+1 CONJ <12 length		-37
s+1 CONJ <40		34
s+1 CONJ <40 length		34
s+1 CONJ <50		65
s+1 CONJ fine		37
s+1 CONJ fine length		36
s+1 COP	-26
s+1 COP <3	-26
s+1 COP whole	-26
s+1 DET	-20
s+1 DET <0.6		45
s+1 DET <0.6 length		48
s+1 DET <8		-16
s+1 DET <8 length		32
s+1 DET whole	-38
s+1 M-	-30
s+1 M- whole	-30
s+1 MOD	-22
s+1 MOD whole	-22
s+1 NEG length		-67
s+1 NEG whole		70
s+1 PREP <0.1 length		-17
s+1 PREP <100		-19
s+1 PREP <100 length		-30
s+1 PREP <1000	36
s+1 PREP <115		47
s+1 PREP <12		24
s+1 PREP <16	-28	49
s+1 PREP <16 length		29
s+1 PREP <160		30
s+1 PREP <160 length		32
s+1 PREP <2	-51
s+1 PREP <2 length		41
s+1 PREP <20		56
s+1 PREP <26	27
s+1 PREP <26 length		20
s+1 PREP <260		-52
s+1 PREP <3	-32
s+1 PREP <32	35
s+1 PREP <32 length		-7
s+1 PREP <40	46	39
s+1 PREP <40 length		39
s+1 PREP <5	-23	36
s+1 PREP <5 length		41
s+1 PREP <50	50
s+1 PREP <60		29
s+1 PREP <60 length		26
s+1 PREP <600	22
s+1 PREP <72	37
s+1 PREP <72 length		-14
s+1 PREP <8	-43	36
s+1 PREP <8 length		41
s+1 PREP <85		-48
s+1 PREP decimal		25
s+1 PREP decimal voltage		19
s+1 PREP quarter		48
s+1 PREP quarter length		52
s+1 PREP temperature		26
s+1 PREP weight		21
s+1 PREP whole temperature		26
s+1 PREP whole voltage		-46
s+1 PREP whole weight		21
s+1 PRON		55
s+1 PRON whole		55
s+1 Q0	-31
s+1 Q0 whole	-31
s+1 Qlength	43
s+1 Qlength whole	43
s+1 SUB		32
s+1 SUB length		20
s+1 SUB whole length		-21
s+1 Ton		-37
s+1 Vmovepp whole		44
s+1 Votherp		-25
s+1 Votherp length		-25
s+1 Vworkb	-37
s+1 Vworkb <5		37
s+1 Vworkb <5 length		37
s+1 Vworkb <8		-39
s+1 Vworkb whole	-37	-27
s+1 Vworks	-40
s+1 Vworks <5	-22
s+1 Vworks whole	-40
s+1 tdefect	-36	38
s+1 tdefect <0.6		38
s+1 tdefect <0.6 length		38
s+1 tdefect <2	-45
s+1 tdefect <3		32
s+1 tdefect <3 length		22
s+1 tdefect <5		24
s+1 tdefect <5 length		20
s+1 tdefect fine		30
s+1 tdefect fine length		30
s+1 tdefect length		37
s+1 tdefect quarter		30
s+1 tdefect quarter length		30
s+1 tdefect whole	-51	46
s+1 tdefect whole length		43
s+1 tdefectVotherpp	-29
s+1 tdefectVotherpp whole	-29
s+1 tdefectVworkpp	-29
s+1 tdefectVworkpp whole	-29
s+1 tfinish	-53	-26
s+1 tfinish length		-40
s+1 tfinish whole	-53	-33
s+1 tfinish whole length		-56
s+1 tfixture	-25
s+1 tfixture whole	-26
s+1 tmaterial	-31	-43
s+1 tmaterial <12	-19
s+1 tmaterial <16	-49
s+1 tmaterial <2	-28
s+1 tmaterial <5	-17
s+1 tmaterial <8	-15
s+1 tmaterial length		-43
s+1 tmaterial whole	-31
s+1 tmaterialVworkb	-27
s+1 tmaterialVworkb whole	-27
s+1 tmaterialVworks	-24
s+1 tmaterialVworks <3	-19
s+1 tmaterialVworks whole	-24
s+1 tpart	-26	-56
s+1 tpart <26	-19
s+1 tpart <3	-21
s+1 tpart <5	-17
s+1 tpart <8	-19
s+1 tpart whole	-26
s+1 tpartVworkb	-38
s+1 tpartVworkb whole	-38
s+1 tpartVworks	-30
s+1 tpartVworks whole	-30
s+1 tsurface	-24	25
s+1 tsurface <0.6		50
s+1 tsurface <0.6 length		50
s+1 tsurface <2	-28
s+1 tsurface <3	-20
s+1 tsurface <5	-23	-18
s+1 tsurface <5 length		-18
s+1 tsurface <8	-36
s+1 tsurface fine		35
s+1 tsurface fine length		35
s+1 tsurface length		31
s+1 tsurface whole	-24
s+1 tsurfaceVotherb		29
s+1 tsurfaceVotherb <0.6		24
s+1 tsurfaceVotherb <0.6 length		24
s+1 tsurfaceVotherb length		29
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
s+1 w <115	11
s+1 w <12	-22	23
s+1 w <12 length		22
s+1 w <130	20
s+1 w <16	-30	41
s+1 w <2	-35	-8
s+1 w <2 length		-11
s+1 w <20	59
s+1 w <26		34
s+1 w <26 length		27
s+1 w <260		33
s+1 w <3	-45	47
s+1 w <3 length		49
s+1 w <32	23	67
s+1 w <32 length		43
s+1 w <40	-40	-12
s+1 w <40 length		-12
s+1 w <400	30
s+1 w <5	-61	-25
s+1 w <5 length		-8
s+1 w <50	41	-25
s+1 w <50 length		21
s+1 w <60		24
s+1 w <600	12
s+1 w <72	11
s+1 w <8		7
s+1 w <85		81
s+1 w <85 length		63
s+1 w voltage		13
s+1 w whole voltage		13
s+2 # # pressure		31
s+2 # # volume		-18
s+2 CONJ #		-34
s+2 CONJ # length		-34
s+2 CONJ Q0	-48	-25
s+2 CONJ Q0 length		18
s+2 CONJ SUB		37
s+2 CONJ SUB length		19
s+2 DET #		65
s+2 DET # length		66
s+2 DET w	-28	26
s+2 DET w length		54
s+2 M- Q0	-30
s+2 PREP #	-13
s+2 PREP # length		38
s+2 PREP DET		32
s+2 PREP DET percent		21
s+2 PREP OPR	-46
s+2 PREP PREP		61
s+2 PREP PREP length		60
s+2 PREP PRON	25
s+2 PREP PRON length		-13
s+2 PREP Q0		27
s+2 PREP Q0 length		36
s+2 PREP Qlength		-11
s+2 PREP Qlength length		-8
s+2 PREP Qtime		27
s+2 PREP SUB length		43
s+2 PREP Vmoveb	-48
s+2 PREP Vworkb		28
s+2 PREP Vworkb length		24
s+2 PREP tmaterial		46
s+2 PREP tmaterial length		59
s+2 PREP tmaterialVworkb		64
s+2 PREP tmaterialVworkb length		64
s+2 PREP w	-36
s+2 PREP w voltage		12
s+2 Q0 #	-28
s+2 SUB DET	-33	64
s+2 SUB PRON	12
s+2 Vmovepp PREP		-12
s+2 Vworkb #		-64
s+2 Vworkb # length		-54
s+2 Vworkb PREP		31
s+2 Vworkb PREP length		40
s+2 Vworkb SUB		28
s+2 Vworkb SUB length		28
s+2 Vworkpp #		-21
s+2 Vworkpp # length		13
s+2 Vworks #	-36
s+2 tarea #	-35
s+2 tdefect #		50
s+2 tdefect # length		48
s+2 tdefect PREP	-39
s+2 tfinish #	-49	-40
s+2 tfinish # length		-61
s+2 tfixture #	-25
s+2 tmaterial #	-39
s+2 tmaterial PREP	-26
s+2 tmaterial w	-23
s+2 tmaterialVworkb #	-34
s+2 tmaterialVworks #	-17
s+2 tmaterialVworks PREP	-18
s+2 tpart #	-28
s+2 tpart PREP	-18
s+2 tsurface #	-27	25
s+2 tsurface PREP	-14	42
s+2 tsurface PREP length		48
s+2 tsurface w	-20
s+2 w # length		39
s+2 w # pressure		-12
s+2 w CONJ		30
s+2 w CONJ length		30
s+2 w DET	29	-16
s+2 w DET length		-16
s+2 w PREP	-40	41
s+2 w PREP length		41
s+2 w Q0		-31
s+2 w Qlength		-7
s+2 w Qlength length		-7
s+2 w SUB		53
s+2 w SUB length		53
s+2 w Vworkpp	-24
s+2 w w	-37
s-1 # current		-20
s-1 # percent		25
s-1 # weight		-36
s-1 CONJ	-26
s-1 DET	-27	-20
s-1 HAVE	-29
s-1 M(		-61
s-1 M( length		-52
s-1 M+	-24
s-1 M-	-34
s-1 NEG	-51	-60
s-1 NEG length		-39
s-1 OPR	-52
s-1 PREP angle		-37
s-1 PREP percent		50
s-1 PREP pressure		35
s-1 PREP weight		47
s-1 Q0	-19	-26
s-1 Q0 length		-26
s-1 Qlength	-20
s-1 Qpack	-18
s-1 SUB	-44	-15
s-1 SUB length		-21
s-1 Ton	-24
s-1 Ton length		39
s-1 Vhaveb	-16
s-1 Vhavepp	-28
s-1 Vmeasureb		47
s-1 Vmeasureb length		37
s-1 Vmeasurebpp	36	42
s-1 Vmeasurei	53
s-1 Vmeasurei length		23
s-1 Vmeasurepp		22
s-1 Vmeasures	55	31
s-1 Vneedb	-26	-25
s-1 Vneedb length		-15
s-1 Votherb	20
s-1 Vothers		55
s-1 Vsayb	-27	25
s-1 Vsaypp	27
s-1 Vsays		23
s-1 Vsays length		14
s-1 Vworkb	-24	-22
s-1 Vworkb length		-25
s-1 Vworkbp		23
s-1 Vworkbp length		23
s-1 Vworkbpp		-17
s-1 Vworkbpp length		-21
s-1 Vworki	44	54
s-1 Vworkpp	-33
s-1 tarea	-36
s-1 tdefect	-30	42
s-1 tdefect length		42
s-1 tdefectVotherb		61
s-1 tdefectVotherb length		59
s-1 tdefectVotheri		57
s-1 tdefectVotherpp		56
s-1 tdefectVotherpp length		56
s-1 tdefectVothers		36
s-1 tdefectVothers length		36
s-1 tdefectVworkpp		54
s-1 tdefectVworkpp length		54
s-1 tfinish	-27	-85
s-1 tfixture		32
s-1 tfixture length		40
s-1 tmaterial	-41	-26
s-1 tmaterial length		-19
s-1 tmaterial's	28	-15
s-1 tmaterial's length		-15
s-1 tmaterialVworkb	-64
s-1 tpart	-61	-14
s-1 tpart length		-40
s-1 tpart's		53
s-1 tpart's length		53
s-1 tpartVworks		82
s-1 tsurface		37
s-1 tsurface's	49
s-1 tsurfaceVotherb		32
s-1 tsurfaceVotherb length		32
s-1 tsurfaceVworkb	22	46
s-1 tsurfaceVworkb length		43
s-1 tsurfaceVworki		66
s-1 w	-25
s-1 w area		32
s-1 w pressure		34
s-1 w temperature		-22
s-1 w voltage		-47
s-1 w's	34
s-1 wly	18	24
s-1 wly length		24
s-2 # # current		-20
s-2 # # percent		25
s-2 # # weight		-36
s-2 # DET	-22	-59
s-2 # DET length		-45
s-2 # PREP		44
s-2 # PRON	-26
s-2 # Vneeds	29	62
s-2 # Vneeds length		38
s-2 # Votherb		-32
s-2 # Votherb length		-37
s-2 # Votherp		30
s-2 # Vworkb		40
s-2 # Vworkb length		40
s-2 # Vworkbpp		-13
s-2 # Vworkbpp length		-29
s-2 # tfixture	36
s-2 # tfixture length		20
s-2 # tmaterial	-68	-34
s-2 # tpart	-28	-12
s-2 # tpart length		-21
s-2 # tsurface	10
s-2 # tsurface's		71
s-2 # w length		70
s-2 CONJ DET	-32
s-2 COP DET	23
s-2 COP PREP	48
s-2 COP PREP length		45
s-2 COP Vworkpp		64
s-2 COP Vworkpp length		62
s-2 COP tdefect		20
s-2 COP tdefect length		20
s-2 COP w		28
s-2 COP w length		28
s-2 COP wly		27
s-2 COP wly length		27
s-2 DET tarea length		-19
s-2 DET tfixture		22
s-2 DET tfixture length		22
s-2 DET tmaterial	20	66
s-2 DET tmaterial length		65
s-2 DET tpart		59
s-2 DET tpart length		51
s-2 DET tsurface		27
s-2 DET tsurface length		27
s-2 DET w	-32
s-2 DET w's	-39	-38
s-2 DET w's length		-38
s-2 PREP DET	-27	-39
s-2 PREP DET length		-44
s-2 PREP Votherb	-27
s-2 PREP Vworkb	-42	22
s-2 PREP Vworkb length		22
s-2 PREP tmaterial		-58
s-2 PREP tmaterial length		-46
s-2 PREP tsurface		-18
s-2 PREP tsurface length		-18
s-2 PREP w	-41	-45
s-2 PREP w length		-30
s-2 PRON COP	-44
s-2 PRON DET	-39	-27
s-2 PRON DET length		-24
s-2 PRON PREP	-29
s-2 PRON PREP length		46
s-2 PRON Vhavepp	-29
s-2 PRON Vmeasurei		26
s-2 PRON Vneedb		-21
s-2 PRON Votherb		44
s-2 PRON Votherb length		44
s-2 PRON Votherp	-18	-17
s-2 PRON Votherp length		-35
s-2 PRON Vworkpp	-41	-99
s-2 PRON w		68
s-2 PRON w length		68
s-2 Q0 CONJ	-61
s-2 Q0 M-	-28
s-2 Q0 PREP	-39	-23
s-2 Q0 PREP length		-23
s-2 Q0 w	-24
s-2 Qlength PREP		-36
s-2 Qlength PREP length		-44
s-2 Qlength w		26
s-2 Qlength w length		26
s-2 Ton PREP	-59
s-2 Vmeasurei PREP		26
s-2 Vmeasurep PREP		29
s-2 Vmeasurep PREP length		25
s-2 Votherb PREP	24	35
s-2 Votherb PREP length		26
s-2 Votherp DET		50
s-2 Votherp DET length		50
s-2 Votherp PREP		-20
s-2 Votherp PREP length		-20
s-2 Vworkb COP		50
s-2 Vworkb PREP	-45
s-2 Vworkb PREP length		-20
s-2 Vworkb PRON	-34
s-2 Vworkbpp PREP	95	62
s-2 Vworkbpp PREP length		62
s-2 Vworki PREP		73
s-2 Vworkpp DET	-17	30
s-2 Vworkpp DET length		30
s-2 Vworkpp PREP	-33
s-2 Vworkpp PRON		24
s-2 Vworkpp PRON length		21
s-2 Vworks PREP	-32	-44
s-2 tarea PREP		-53
s-2 tarea PREP length		-46
s-2 tdefect PREP	-50	48
s-2 tdefect PREP length		47
s-2 tdefect w		46
s-2 tdefect w length		46
s-2 tdefectVotherb PREP		28
s-2 tdefectVotherb PREP length		28
s-2 tdefectVothers PREP		27
s-2 tdefectVworkpp PREP	-44	31
s-2 tdefectVworkpp PREP length		32
s-2 tdefectVworks PREP		33
s-2 tdefectVworks PREP length		33
s-2 tfinish PREP		52
s-2 tfinish PREP length		55
s-2 tfixture COP	-29
s-2 tfixture PREP	-46	22
s-2 tfixture PREP length		21
s-2 tfixture Votherp		-31
s-2 tmaterial COP length		43
s-2 tmaterial PREP	-33
s-2 tmaterial Vmeasures		23
s-2 tmaterial w		29
s-2 tmaterial w length		29
s-2 tmaterial's PREP		35
s-2 tpart COP	12
s-2 tpart PREP	25
s-2 tpart w	-45
s-2 trole Vneeds	23
s-2 tsurface COP		40
s-2 tsurface COP length		37
s-2 tsurface PREP		66
s-2 tsurface PREP length		67
s-2 tsurface w		46
s-2 tsurfaceVotherb PREP		22
s-2 tsurfaceVotherb PREP length		22
s-2 w CONJ	15	-25
s-2 w CONJ length		-25
s-2 w COP		37
s-2 w COP length		28
s-2 w DET	-41
s-2 w Vmeasures		45
s-2 w Vneeds	61
s-2 w Votherp		24
s-2 w Vsays	-25
s-2 w tmaterial		32
s-2 w tmaterial length		32
s-2 w tsurface length		-21
s-2 w w	-61	33
said last			24
said last %			34
said last V			17
said last cfm			29
said last cm			61
said last deg			-25
said last gal			-18
said last ohm			58
said last psi			42
said last sq ft			36
said last sq m			60
said next F			-49
said next mm			21
said next sq ft			65
says copula ahead	-17	-42
says copula ahead length		-24
says copula ahead whole	-17
says copula ahead whole length		25
says copula area whole		26
says copula behind angle		24
says copula behind decimal	37	31
says copula behind decimal length		30
says copula behind percent		35
says copula behind pressure		-20
says copula behind temperature		26
says copula behind whole angle		25
says copula behind whole percent		35
says copula behind whole temperature		26
says copula fixture fine		-14
says copula fixture fine length		-14
says copula fixture half		43
says copula fixture half length		43
says copula fixture quarter		-6
says copula fixture quarter length		-6
says copula material quarter		-8
says copula material quarter length		-8
says copula material whole		33
says copula material whole length		26
says copula own fine		23
says copula own fine length		23
says copula own half		39
says copula own half length		39
says copula own whole length		25
says copula part fine		38
says copula part fine length		38
says copula part quarter		29
says copula part quarter length		29
says copula part whole	-27
says copula person fine		52
says copula person fine length		52
says copula person quarter		46
says copula person quarter length		46
says copula person whole	-71
says copula pointer decimal	68
says imperative behind	-14
says imperative behind whole	-17	-18
says imperative none whole	-17	-18
says modal ahead	-47	-24
says modal ahead whole	-47	-30
says modal behind	-23
says modal behind whole	-16
says modal behind whole length		25
says modal none whole	-18
says modal person quarter		-18
says modal person quarter length		-18
says modal person whole	-16	-24
says none behind area		20
says none behind decimal	18
says none behind decimal current		35
says none behind decimal length		-9
says none behind decimal voltage		24
says none behind flow		29
says none behind other		32
says none behind temperature		25
says none behind whole area		15
says none behind whole temperature		25
says none behind whole weight		-28
says none none decimal	18
says none none decimal current		35
says none none decimal length		-9
says none none decimal voltage		24
says none none whole area		15
says none none whole temperature		25
says none none whole weight		-28
says owed behind	-7
says owed behind quarter		23
says owed behind quarter length		23
says owed behind whole	-10
says owed fixture fine		27
says owed fixture fine length		27
says owed material whole		43
says owed none whole	-26
says owed person half length		-36
says owed person whole		9
says owed person whole length		20
says owed pointer whole	-42	-14
says owed pointer whole length		-14
says past ahead	-15	-50
says past ahead length		-49
says past ahead whole	-15	-38
says past ahead whole length		-31
says past area whole		29
says past behind	-17
says past behind fine		34
says past behind fine length		35
says past behind other		26
says past behind percent		29
says past behind pressure		40
says past behind volume		-26
says past behind weight		10
says past behind whole	-17
says past behind whole other		26
says past behind whole percent		29
says past behind whole pressure		40
says past behind whole volume		-10
says past behind whole weight		10
says past material half		36
says past material half length		36
says past material whole	-33	-20
says past material whole length		-25
says past none fine		30
says past none fine length		30
says past none half length		28
says past none quarter		-48
says past none quarter length		-51
says past none whole	-15
says past own whole	-36
says past own whole length		25
says past part whole	-50	41
says past part whole length		52
says past person half		-18
says past person whole area		24
says past person whole length		-44
says past person whole weight		13
says past pointer whole	13	39
says past pointer whole length		32
says past surface fine		29
says past surface fine length		29
says past surface whole		28
says past surface whole length		27
says past tells whole	-32
says present ahead	-20	-33
says present ahead length		-33
says present ahead whole	-20	-37
says present ahead whole length		-37
says present behind	-11
says present behind area		-25
says present behind decimal	-28	34
says present behind fine		47
says present behind fine length		48
says present behind half		-11
says present behind half length		-11
says present behind other		-26
says present behind percent		35
says present behind quarter		31
says present behind quarter length		32
says present behind volume		-28
says present behind weight		20
says present behind whole	-11
says present behind whole area		-28
says present behind whole other		-37
says present behind whole percent		33
says present behind whole weight		20
says present material fine		25
says present material fine length		25
says present material whole		65
says present material whole length		59
says present own whole	-17
says present own whole length		-26
says present part whole		44
says present part whole length		34
says present person whole	-22	-12
says present pointer half		-18
says present pointer half length		-18
says present pointer whole	-27
says present pointer whole length		-13
says present surface whole	-24	-25
says present surface whole length		-46
says present tool whole		-31
size <0.1	-54								-16						-29		41
size <0.1 fine		30
size <0.1 fine length		31
size <0.1 length		31
size <0.1 one									-16						-29		41
size <0.1 whole	-57								-15						-28		43
size <0.6	-64			37					-20
size <0.6 decimal	-64			37					-20
size <0.6 one				37					-20
size <0.6 quarter		-11
size <0.6 quarter length		-16
size <0.6 quarter slope		21
size <0.6 slope		28
size <1				-12														86
size <1 decimal				-12														86
size <1 one				-12														86
size <1 quarter		-20
size <1 quarter length		-17
size <100						23			38		22									17
size <100 length		-6
size <100 one				-12		26			38		22									17
size <100 whole		30				23			45		14									17
size <1000						68
size <1000 length		-27
size <1000 one						46
size <1000 pair2				-28		43
size <1000 whole						68
size <1000 whole length		-27
size <115	-31								41						23
size <115 length		-20
size <115 one									42						24
size <115 whole	-31								41						23
size <12	-21
size <12 area		-20
size <12 decimal	47	64						-18				27	25	60				-35			-21
size <12 half		-44
size <12 half length		-47
size <12 pair2				34
size <12 percent		36
size <12 quarter		34
size <12 quarter length		34
size <12 weight		36
size <12 whole	-27
size <12 whole area		-26
size <12 whole percent		27
size <130		58							49				52
size <130 length		-27
size <130 one				-13					51				54
size <130 voltage		79
size <130 whole		50							56				35
size <130 whole length		-39
size <16 area		-21
size <16 decimal	40																		92
size <16 half		-33
size <16 half length		-33
size <16 one				31
size <16 pair1				-24
size <16 pair2					-17
size <16 whole	-33			30
size <16 whole area		-21
size <160		22				21			63
size <160 one						31			63
size <160 whole		20				21			63
size <2	-37
size <2 area		-31
size <2 half		-35
size <2 half length		-38
size <2 volume		-21
size <2 whole	-39
size <20	8			39								17
size <20 one				30								19
size <20 pair2				45
size <20 whole				42								19
size <200	20	61				65
size <200 one						65
size <200 whole	20	41				65
size <26	-36			27
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
size <260	18			-16		33							57							19
size <260 length		23
size <260 one				-16		33							57							19
size <260 whole	18			-17		34							48							20
size <260 whole length		23
size <3	-36
size <3 decimal	-12					-48		86
size <3 half		-33
size <3 half length		-33
size <3 quarter		33
size <3 quarter length		33
size <3 whole	-38
size <3000		44				73
size <3000 one						50
size <3000 pair2						68
size <3000 whole		44				73
size <32				34																	26
size <32 fine		45
size <32 fine length		45
size <32 half		26
size <32 half length		26
size <32 length		33
size <32 one																					27
size <32 pair2				31		-11
size <32 percent		33
size <32 whole				39
size <32 whole percent		33
size <40				36
size <40 fine		38
size <40 fine length		38
size <40 half		65
size <40 half length		65
size <40 one				35
size <40 pair2				40
size <40 quarter		62
size <40 quarter length		62
size <40 whole				36
size <40 whole length		-16
size <400	8	31				37											30
size <400 length		-26
size <400 one						50											32
size <400 other		23
size <400 whole	8	31				37											30
size <400 whole length		-26
size <400 whole other		23
size <5	-30
size <5 current		-28
size <5 decimal	36												-40		-45			16	-20			29
size <5 decimal length		-12
size <5 fine		-17
size <5 fine length		-17
size <5 half		-32
size <5 half length		-32
size <5 pair1					33
size <5 temperature		-63
size <5 whole	-34
size <5 whole temperature		-63
size <50		20		30
size <50 fine		55
size <50 fine length		55
size <50 length		20
size <50 pair2					38	-20
size <50 whole				28
size <60	26	27		41					53
size <60 fine		30
size <60 fine length		30
size <60 half		32
size <60 half length		32
size <60 length		31
size <60 one				33					55
size <60 pressure		22
size <60 quarter		31
size <60 quarter length		31
size <60 whole	26			41					53
size <60 whole pressure		22
size <600	21	33		-17		47																29
size <600 one						31																29
size <600 pair2				-30		52
size <600 whole	21	33		-17		47																29
size <72	23	35		28					37											17
size <72 length		23
size <72 one									40			22								19
size <72 weight		45
size <72 whole	23			29					36											17
size <72 whole weight		45
size <8	-36
size <8 current		20
size <8 decimal	16	34												31	33			18			25
size <8 half		18
size <8 half length		13
size <8 pressure		44
size <8 whole	-38
size <85									20
size <85 half		37
size <85 half length		37
size <85 length		41
size <85 one							20		22			20
size <85 whole									20
size <85 whole length		27
size huge						47
size huge one						47
size huge whole						47
subject area		39
subject area be behind	30	32
subject area be behind length		21
subject area length		31
subject area null behind	-37	35
subject area null behind length		34
subject fixture #	-20
subject fixture at	35	-27
subject fixture at length		-36
subject fixture be ahead	-29
subject fixture have behind		21
subject fixture have behind length		21
subject fixture null behind	10	-11
subject fixture was		-31
subject material	-20
subject material about		27
subject material about length		27
subject material are		46
subject material are length		46
subject material area		46
subject material at		29
subject material at length		29
subject material be ahead	-25
subject material by		16
subject material by length		16
subject material have behind	-12	25
subject material have behind length		25
subject material is length		37
subject material of	-39
subject material percent		24
subject material the	-18
subject none # angle		-21
subject none # area		20
subject none # flow		35
subject none # other		36
subject none # power		45
subject none # weight		-16
subject none (		-38
subject none +	-24
subject none -	-25
subject none <q>	-70	-71
subject none a length		47
subject none all	-20
subject none and		50
subject none and length		42
subject none angle		-29
subject none area		20
subject none at		36
subject none buy behind		-28
subject none by	-48	-24
subject none by length		-24
subject none come behind		38
subject none cut	-21	20
subject none cut behind	32
subject none cut length		20
subject none falls		19
subject none falls length		19
subject none get behind	22	-21
subject none get behind length		-10
subject none grab behind	-18
subject none hang behind		41
subject none hang behind length		41
subject none have behind		55
subject none have behind length		55
subject none hole		35
subject none hole length		35
subject none in		-49
subject none in length		-41
subject none leave behind		-22
subject none leave behind length		-22
subject none like		20
subject none like length		20
subject none maybe		32
subject none maybe length		28
subject none measure behind		23
subject none need behind	-14	-25
subject none need behind length		-43
subject none of	-28	-27
subject none of length		-37
subject none on	-24
subject none order behind	-29
subject none other		38
subject none out		31
subject none out length		31
subject none over		57
subject none over length		57
subject none prime behind	-32
subject none run		23
subject none run behind		-10
subject none run behind length		-10
subject none run length		23
subject none sand behind	-25
subject none say		38
subject none slope		28
subject none take behind		29
subject none take behind length		29
subject none the		-30
subject none the length		-25
subject none to	11
subject none up length		28
subject none use behind		-26
subject none use behind length		-24
subject none volume		-23
subject none want behind	-28	28
subject none want behind length		28
subject none wants		26
subject none wants length		26
subject none with	-24
subject none within		30
subject none within length		30
subject own	-29	18
subject own #		-73
subject own # length		-73
subject own and	-25
subject own at	23	72
subject own at length		66
subject own be ahead		20
subject own be behind	-26	32
subject own be behind length		39
subject own is	-34	42
subject own is length		24
subject own length		30
subject own null behind		25
subject own to		18
subject part	-26
subject part at	43	61
subject part at length		59
subject part be ahead	-14
subject part be behind		35
subject part be behind length		32
subject part null behind	-37
subject part was		22
subject part was length		22
subject person	-18
subject person <q>	30
subject person a	27	-74
subject person a length		-57
subject person about		27
subject person about length		22
subject person all	-19
subject person area		-28
subject person at length		-33
subject person be behind	-51	-32
subject person be behind length		-38
subject person by	-43	32
subject person by length		32
subject person count behind	-37
subject person do behind	-17
subject person finish behind	-14
subject person get behind		8
subject person go behind	-22
subject person got	-18	46
subject person had	-30
subject person have behind	33	-59
subject person have behind length		-39
subject person in	-18	11
subject person in length		23
subject person is	27
subject person it	-16
subject person make behind	-31	-23
subject person make behind length		-23
subject person measure behind	65	33
subject person measure behind length		22
subject person move behind		19
subject person move behind length		19
subject person need behind	-39	-41
subject person need behind length		-40
subject person null behind	-59
subject person pick behind	-43
subject person run behind		-31
subject person sand behind	-16
subject person set behind		-27
subject person set behind length		-27
subject person take behind	-34
subject person the	-26	-31
subject person the length		-31
subject person think behind		18
subject person to	50	77
subject person to length		79
subject person up		27
subject person up length		27
subject person volume		-25
subject person want behind	35	17
subject person want behind length		48
subject person wants	24
subject person with		-8
subject pointer #	-24
subject pointer about length		-6
subject pointer all	-22
subject pointer and		26
subject pointer and length		26
subject pointer are		44
subject pointer are length		44
subject pointer at	26	-6
subject pointer at length		-27
subject pointer by		24
subject pointer by length		24
subject pointer good		27
subject pointer good length		27
subject pointer have behind	-20
subject pointer in		68
subject pointer in length		68
subject pointer is	-38	42
subject pointer like		24
subject pointer like length		26
subject pointer over		42
subject pointer over length		42
subject pointer say behind	29
subject pointer says	-23
subject pointer that's	-23
subject pointer the	-19
subject pointer there's	-26
subject pointer to		25
subject pointer to length		25
subject pointer want behind		59
subject pointer want behind length		59
subject surface #	-30
subject surface about		-31
subject surface about length		-31
subject surface and		-15
subject surface and length		-15
subject surface at	59	-21
subject surface at length		-26
subject surface be ahead	38
subject surface go behind		26
subject surface go behind length		26
subject surface is	69
subject surface null behind	22
subject surface to		35
subject surface to length		36
subject tells #	27
subject tells be behind		34
subject tells be behind length		31
subject tells length		-10
subject tells say behind	-37
subject tells say behind length		-12
subject tells says	-34
subject tool		-7
sw # at		26
sw # deep	25	48
sw # deep length		48
sw # long		49
sw # long length		49
sw # more	-41
sw # of	-26
sw # on length		-20
sw # up		30
sw # up length		30
sw COP #	14
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
sw PREP # area		19
sw PREP # other		30
sw PREP by		33
sw PREP by length		40
sw PREP centres		-30
sw PREP centres length		-30
sw PREP deep		-60
sw PREP deep length		-60
sw PREP for		30
sw PREP in		25
sw PREP in length		24
sw PREP long		24
sw PREP long length		24
sw PREP of	-27	53
sw PREP of length		56
sw PREP off	39
sw PREP on		26
sw PREP on length		27
sw PREP short		-29
sw PREP short length		-34
sw PREP side	-18
sw PREP the		56
sw PREP to	50	64
sw PREP to length		64
sw PREP wide		39
sw PREP wide length		39
sw PREP with		-24
sw PREP with length		-38
sw PRON #	-27
sw PRON # length		60
sw PRON long		42
sw PRON long length		42
sw Q0 #	-31
sw Vhaveb #	17
sw Vhavepp #	-33
sw Vmeasurei #	44
sw Vmeasures #		19
sw Vneedb #	-21
sw Votherb #	22	16
sw Votherb # length		20
sw Votherb off		22
sw Votherb off length		28
sw Vsayb #		23
sw Vsays #		22
sw Vsays to	-39
sw Vworkb #	-47	25
sw Vworkb # length		21
sw Vworkbpp #	9	28
sw Vworkbpp # length		28
sw Vworki #		52
sw Vworkpp #	-35
sw tarea #	-21	46
sw tarea # length		47
sw tdefect #		48
sw tdefect # length		43
sw tfixture #		34
sw tfixture # length		34
sw tmaterial #	-48	-29
sw tmaterial # length		-29
sw tpart # length		-32
sw tsurface #	21
sw tsurface's #	40
sw tsurfaceVworkb #		29
sw tsurfaceVworkb # length		29
sw tsurfaceVworki #		35
sw w #	-31
sw w # length		32
sw w # temperature		-24
sw w <q>	69	24
sw w by		42
sw w by length		42
sw w in		-40
sw w in length		-13
sw w long		44
sw w long length		44
sw w of		-29
sw w of length		-29
sw wly #	13	29
sw wly # length		29
system both														27
system both one														28						16
system both whole														29						16
system both+									-39	64
system both+ one									-39	64
system both+ whole				-20					-41	67
system metric						22
system metric <100						65													14
system metric <1000						72
system metric <115									-30		-23
system metric <12						57			-26	41	-27
system metric <16												21
system metric <2						-21
system metric <26										31
system metric <3						-29
system metric <3000						60
system metric <40						60
system metric <400																	59
system metric <5																23
system metric <50										32	28
system metric <600						60
system metric <8											-21					48
system metric decimal						-32		64				-22	-22					-18
system metric one						21
system metric pair1						41
system metric pair2				-29
system metric whole						24
system none <100									62
system none <1000						83
system none <115									51						13
system none <12												19		22
system none <130									32				69
system none <16				38								23
system none <160						45			24
system none <20													47
system none <200						68
system none <26												46
system none <260						56			24				46
system none <3000						73
system none <32									-17	21	-25										40
system none <40				45		-10			37
system none <400						28			23
system none <50				-32					47
system none <60				31					45
system none <600				-13		64																-22
system none <72				36					42			29
system none <85									49			29
system none decimal				-18		-16			-15					40
system none pair2				79
system us <0.1															-31
system us <0.6				48														34
system us <1																		45
system us <100						-20					46				35					21
system us <1000				-32		-59
system us <115									41						34							-40
system us <130				27					51
system us <160									76
system us <20				56					36			29
system us <26				49									30
system us <260				-17		-35							20		-31					38
system us <3000				-12		-60
system us <32				46
system us <40				36
system us <400				-13		30									27							-29
system us <50				52
system us <60				43					19
system us <600				-25		-46									-31							66
system us <72				31					42						38					33
system us <8					18
system us decimal									-22				50					41	28
system us pair1					24
system us pair2				46		-18
topic airflow				34								-18								22		14
topic airflow <8 length		-23
topic airflow <85		30
topic airflow flow		31
topic airflow length		-23
topic airflow none				52										30
topic airflow us									-30			-21								21		24
topic airflow whole				25								-18								28		18
topic angle											49
topic angle <0.6 length		-12
topic angle <16		40
topic angle <16 length		40
topic angle <2	-27
topic angle <3	-47
topic angle <5												38
topic angle metric											18
topic angle none						38
topic angle us											47	22
topic angle whole											46
topic current														78
topic current <12													29
topic current decimal													20	93
topic current none														32
topic current us												-25		71								-28
topic current whole														27
topic draft																		77				-29
topic draft <26	-58			-20
topic draft <5		-78
topic draft decimal									-36									105
topic draft pressure		35
topic draft us				15					15									49				-33
topic draft whole									27													-34
topic heat									66	25
topic heat <0.6		-8
topic heat <0.6 length		-8
topic heat <1		-21
topic heat <1 length		-21
topic heat <100	53								63										12
topic heat <12		-38		-23						65
topic heat <16		-35
topic heat <16 length		-56
topic heat <160		23
topic heat <2	-79	32							-45
topic heat <2 length		46
topic heat <20	39			-45					76						45			-28	23
topic heat <26				-27						40			63									-23
topic heat <3	-53								-29
topic heat <5	-55	37							-21
topic heat <5 length		28
topic heat <50		34
topic heat <60	24			-21					76
topic heat <72	38	31				-13			36	43
topic heat <8		25
topic heat <85									46
topic heat length		-24
topic heat metric						25			-33	54
topic heat none									107				-17
topic heat other		-20
topic heat pressure		27
topic heat temperature		66
topic heat us				-23					74
topic heat whole									73	27
topic light	-29	54
topic light <2	-26
topic light length		57
topic moisture	-29			-21								109
topic moisture <0.6		36
topic moisture <0.6 length		35
topic moisture <12		-8
topic moisture <12 length		-24
topic moisture <2 length		19
topic moisture <5	-56	29													-29
topic moisture metric						-14						52
topic moisture none												96
topic moisture percent		55
topic moisture us				-26								61
topic moisture whole				-22								98
topic none	-28
topic none <0.1	-65	40
topic none <0.1 length		24
topic none <0.6	-24			45									-16
topic none <0.6 slope		21
topic none <1		-24
topic none <1 length		-28
topic none <100		19		-30					49		12
topic none <1000				-14		57
topic none <115	-32								23		-24
topic none <12	-27
topic none <12 area		-23
topic none <12 current		-39
topic none <130				23		-15			-19				47
topic none <16	-30
topic none <160		32				41
topic none <160 length		11
topic none <2	-31
topic none <20												35
topic none <200		40
topic none <26				25								25
topic none <26 percent		47
topic none <260		34		-15		37							-38				30			31
topic none <3	-30
topic none <3000				-16		75
topic none <32		27		33										23	-16						27
topic none <40				43
topic none <400	-46
topic none <5	-25	-16
topic none <5 area		-22
topic none <50				39					32
topic none <60	18			53					35
topic none <600	36	35		-24		25																38
topic none <72									26											33
topic none <72 length		29
topic none <8	-35	-17
topic none <85		-19		66		-18	25
topic none <85 length		21
topic none both				-20					31					31
topic none both+						31
topic none current		-33
topic none decimal													-38					27	32
topic none huge	-50
topic none metric						20
topic none slope		20
topic none temperature		-48
topic none weight		-27
topic ohms				34					23										41
topic ohms length		-40
topic ohms none				50															19
topic ohms other		54
topic ohms us									30									-28	34
topic ohms whole				38					27
topic place	-30
topic place <1		-19
topic place <12	-12											-20
topic place <16		-13
topic place <16 length		-10
topic place <2	-34
topic place <26		66
topic place <3	-30	-14
topic place <40		32
topic place <5	-30	-13
topic place <72	16	21		-33
topic place <8	-25
topic place <8 length		23
topic place area		38
topic place metric						-19						-20
topic place none				19
topic place temperature		21
topic pressure		22													54	25	27
topic pressure <100		22
topic pressure <12	-27								-19				35		38
topic pressure <16		-35
topic pressure <16 length		-40
topic pressure <2	-71															-32
topic pressure <5 length		-26
topic pressure length		-15
topic pressure metric						-21									-30	72	72
topic pressure none									-7			-16			54
topic pressure pressure		32
topic pressure us															61
topic pressure whole															61	29	31
topic space <0.1		28
topic space <0.1 length		29
topic space <1		36
topic space <1 length		36
topic space <100	11	-11		33		29
topic space <100 length		-28
topic space <1000	13					72
topic space <12		24		33										23
topic space <16				38	20
topic space <160		-37
topic space <160 length		-37
topic space <2	-36
topic space <20				30	-29				42				36
topic space <200	37					67
topic space <26	25			69
topic space <26 length		34
topic space <260		-50											65
topic space <3	-44					-15
topic space <3000						21
topic space <32				37					-24												27
topic space <40		36		35
topic space <40 length		36
topic space <400	41			-19		81											20
topic space <5	-43	39
topic space <5 length		35
topic space <50		28			36																	-42
topic space <50 length		30
topic space <60	36	37		30		30
topic space <60 length		37
topic space <600	26	89				65
topic space <72	27	42		74		15
topic space <72 length		39
topic space <8					32
topic space <85		44				46
topic space <85 length		42
topic space area		-17
topic space both+				-14		24
topic space decimal				-19		-39		75				-18	28	16	-24				-18
topic space metric						44
topic space none						41
topic space us				31
topic space volume		-10
topic space whole						18
topic torque	-40	-6
topic torque length		-28
topic torque torque		22
topic voltage		22											15
topic voltage <0.6		-6
topic voltage <0.6 length		-10
topic voltage <1000						28
topic voltage <12	-43	32
topic voltage <130	41								30				66
topic voltage <16 length		-32
topic voltage <2	-42
topic voltage <2 length		19
topic voltage <20		32
topic voltage <26		29
topic voltage <3	-31	-37
topic voltage <3000						34
topic voltage <32		-16
topic voltage <5	-36
topic voltage <8	-64	43
topic voltage <8 length		39
topic voltage metric												29
topic voltage none													24
topic voltage voltage		49
topic weight	-32											-27	39	33	-31
topic weight none												-15	27								24
topic weight us												-24	29	34	-36							19
topic weight weight		38
topic weight whole												-27		30	-33							15
topic- airflow	22	-32																		34
topic- airflow <16		71
topic- airflow length		-32
topic- airflow us					21															42
topic- airflow whole					17															37
topic- angle		30		20
topic- angle length		29
topic- angle us				25
topic- current	45	70											47	61
topic- current none									26				55	-31
topic- current us														56
topic- current whole													50	58
topic- draft		24																24
topic- draft length		33
topic- draft us																		31		18
topic- heat									20
topic- heat <12	-22	22
topic- heat <12 length		14
topic- heat <16	58			-16	43										24				75
topic- heat <2	50	-38		26	48
topic- heat <2 length		-44
topic- heat <3	-39								-24
topic- heat <32				-27											-24
topic- heat <40				19							36
topic- heat <5																					36
topic- heat <60		16
topic- heat <72	28	34							20						30
topic- heat decimal																		38	76		34
topic- heat metric						39
topic- heat none				-16																	28
topic- heat pressure		59
topic- heat us					24				23
topic- heat whole									26
topic- light	24	41
topic- light length		53
topic- light none						-27			-16
topic- moisture	-22	17
topic- moisture <12		-33				-20	28			31		33
topic- moisture <2	-20
topic- moisture <3	-34
topic- moisture <5		-31
topic- moisture metric												28
topic- moisture none				23
topic- moisture percent		35
topic- moisture us																				-33
topic- ohms	21	13							-27							20			36
topic- ohms length		18
topic- ohms none									-14
topic- ohms us									-28										43
topic- ohms whole				25					-30							26
topic- place <1		-20
topic- place <1 length		-20
topic- place <100		29
topic- place <12	-15											51
topic- place <16	20			33								29
topic- place <2	-37
topic- place <20		35
topic- place <20 length		35
topic- place <26		35
topic- place <26 length		35
topic- place <3	-28	-15
topic- place <3 length		-15
topic- place <32		18
topic- place <32 length		18
topic- place <40	65			61	-23				16		71
topic- place <5		28			28
topic- place <5 length		25
topic- place <50		53
topic- place <50 length		36
topic- place <60		17
topic- place <60 length		17
topic- place <72		49
topic- place <8						21
topic- place <8 length		-22
topic- place <85		-22
topic- place length		25
topic- place none						27						35
topic- pressure																		17
topic- pressure <0.6		-24
topic- pressure <2	-31	-22													-45							-19
topic- pressure <5																27		39
topic- pressure <72	-34								-21
topic- pressure <8																		33
topic- pressure decimal																		66
topic- pressure length		-29
topic- pressure metric										55						27
topic- pressure none				51
topic- pressure pressure		44
topic- pressure us				-32														31				-32
topic- pressure weight		-51
topic- space <0.6		36
topic- space <0.6 length		36
topic- space <100		55
topic- space <100 length		55
topic- space <12				53
topic- space <16				38
topic- space <2	-39
topic- space <26	-83	20		-67
topic- space <3				33
topic- space <32	40	-16		54		-16						38
topic- space <32 length		-16
topic- space <40		22				22
topic- space <40 length		16
topic- space <50	-43
topic- space <60		-40
topic- space <600	-22					26
topic- space <72				-15		24			26
topic- space <8		20			39
topic- space <8 length		38
topic- space <85	-7	21				-18
topic- space <85 length		27
topic- space both				-23		26			54
topic- space decimal				-12										62				24
topic- space us				24
topic- torque	60	46		-11
topic- torque whole				-11
topic- voltage	-36	-24											31
topic- voltage <12						-19						31	33
topic- voltage <16		-38
topic- voltage <2		-21
topic- voltage <26		28
topic- voltage <3	-51								-29
topic- voltage <5				35
topic- voltage <5 length		9
topic- voltage <8		-25
topic- voltage metric						23
topic- voltage none													41
topic- voltage percent		32
topic- voltage voltage		-41
topic- weight	-32	68																				20
topic- weight length		69
topic- weight us																						24
topic- weight whole																						20
topic-- airflow	14	30																	22	20
topic-- airflow length		26
topic-- airflow us																			26
topic-- airflow whole																				22
topic-- angle <12		29
topic-- angle <12 length		29
topic-- current		-11											29
topic-- current none													36
topic-- draft		-29		26																16
topic-- draft <2	-11							32	-19
topic-- draft length		-40
topic-- draft us				32																21
topic-- draft whole				27																17
topic-- heat															17
topic-- heat <0.6		-21
topic-- heat <0.6 length		-27
topic-- heat <16	15														25
topic-- heat <2	-33
topic-- heat <3	-27
topic-- heat <5		55
topic-- heat <5 length		55
topic-- heat <8																					30
topic-- heat decimal				-29																	75
topic-- heat metric						19
topic-- heat us				-20											27
topic-- heat whole															19
topic-- light	-35
topic-- moisture												30
topic-- moisture <16		40
topic-- moisture <3	20			36
topic-- moisture none												57
topic-- moisture us													17		30
topic-- moisture whole												37
topic-- ohms		38																	19
topic-- ohms us				-16															24
topic-- place <1		60
topic-- place <1 length		60
topic-- place <12	21	-56		41
topic-- place <12 length		-45
topic-- place <16		49		37
topic-- place <2	-30	85
topic-- place <2 length		86
topic-- place <26		-66
topic-- place <26 length		-70
topic-- place <3	-19			-11
topic-- place <32		33
topic-- place <32 length		30
topic-- place <5																25
topic-- place <5 length		-26
topic-- place <50		-17
topic-- place <60		23
topic-- place <72		-18
topic-- place <8															-17						24	16
topic-- place area		65
topic-- place metric						34		-34								30
topic-- place none				26		19
topic-- pressure	9	46													33		22
topic-- pressure <2	-37								-18
topic-- pressure length		47
topic-- pressure metric																	54
topic-- pressure us				27											55
topic-- pressure whole															19		25
topic-- space <0.6		-26
topic-- space <0.6 length		-34
topic-- space <1		34
topic-- space <1 length		34
topic-- space <12	21	18				18								29
topic-- space <12 length		16
topic-- space <16	-8	-18										24
topic-- space <2	-30	-33
topic-- space <2 length		-33
topic-- space <3	-22
topic-- space <40		47
topic-- space <40 length		47
topic-- space <5		-34			28
topic-- space <5 length		-37
topic-- space <60	23								35
topic-- space <72	-34			39					-22			21
topic-- space <8														30
topic-- space metric						27
topic-- space none												23
topic-- space percent		-8
topic-- voltage	16
topic-- voltage <16		61
topic-- voltage <2					49
topic-- voltage <3	-17
topic-- voltage <5	-22			-13								37
topic-- voltage metric												29		22
topic-- voltage none									21
topic-- voltage us				34
topic-- weight	-50	-32				-21								32
topic-- weight whole						-21
topics 	-28
topics  <0.1	-65	40
topics  <0.1 length		24
topics  <0.6	-24			45									-16
topics  <0.6 slope		21
topics  <1		-24
topics  <1 length		-28
topics  <100		19		-30					49		12
topics  <1000				-14		57
topics  <115	-32								23		-24
topics  <12	-27
topics  <12 area		-23
topics  <12 current		-39
topics  <130				23		-15			-19				47
topics  <16	-30
topics  <160		32				41
topics  <160 length		11
topics  <2	-31
topics  <20												35
topics  <200		40
topics  <26				25								25
topics  <26 percent		47
topics  <260		34		-15		37							-38				30			31
topics  <3	-30
topics  <3000				-16		75
topics  <32		27		33										23	-16						27
topics  <40				43
topics  <400	-46
topics  <5	-25	-16
topics  <5 area		-22
topics  <50				39					32
topics  <60	18			53					35
topics  <600	36	35		-24		25																38
topics  <72									26											33
topics  <72 length		29
topics  <8	-35	-17
topics  <85		-19		66		-18	25
topics  <85 length		21
topics  current		-33
topics  huge	-50
topics  slope		20
topics  temperature		-48
topics  weight		-27
topics airflow				-12					-24			-23								39		16
topics airflow flow		28
topics airflow space		-27
topics airflow space length		-27
topics angle	-39	26		-22							63
topics angle <0.6		-25
topics angle <0.6 length		-30
topics angle <3	-46
topics angle length		21
topics angle space						28
topics angle space <0.6		32
topics angle space <0.6 length		32
topics current														75
topics current weight		-28
topics draft																		60
topics draft <26	-27
topics draft airflow length		-18
topics draft space		37
topics draft space length		36
topics heat	23			-23					86	51			27
topics heat <50		34
topics heat <60	19								53
topics heat <72	21			-26		-12			34	50
topics heat length		-12
topics heat ohms		-23
topics heat place		71							47
topics heat pressure		28													41
topics heat space		33		29		-18				32
topics heat temperature		57
topics heat voltage		17				29
topics heat voltage space	16								43
topics light	-17	50
topics light <2	-26
topics light space		25
topics light space length		25
topics moisture	-33			-33								65
topics moisture percent		49
topics moisture place <0.6		16
topics moisture place <0.6 length		16
topics moisture place length		43
topics moisture space															49							-47
topics moisture space place		29
topics moisture space place length		25
topics moisture voltage	56					-25						110
topics ohms	-46	-28							-18										32
topics ohms length		-31
topics ohms space length		14
topics place	-27
topics place <3	-24	-50
topics place <3 length		-27
topics place <5	-26
topics pressure	39			-21		-25									65	46	47
topics pressure draft pressure		23
topics pressure length		-13
topics space						19
topics space <0.1		29
topics space <0.1 length		29
topics space <1		32
topics space <1 length		32
topics space <100	6			40		32			-29				13
topics space <1000						47
topics space <115 length		-19
topics space <12	17	30		40										27
topics space <12 length		25
topics space <16		49		40	23
topics space <16 length		46
topics space <160		-37
topics space <160 length		-37
topics space <2	-35
topics space <20				46	-31								35
topics space <26				51
topics space <260	27	-52		-13									72		-32
topics space <3	-41					-15		23
topics space <32									-17	26	-27										33
topics space <40				29
topics space <400	41			-19		81											20
topics space <5	-40
topics space <50		25			42
topics space <50 length		29
topics space <60		39
topics space <60 length		39
topics space <600	26					65
topics space <72		36
topics space <72 length		36
topics space <8					36
topics space <85	71	31		88		56
topics space <85 length		31
topics space area		-29
topics space place	-30
topics space place <2		30
topics space place <2 length		30
topics space place <5	-17
topics torque torque		21
topics voltage		32											36
topics voltage <12	-35
topics voltage <130	36												79
topics voltage <2	-31
topics voltage <3	-26
topics voltage <5	-27
topics voltage <8	-38	40
topics voltage length		23
topics voltage place		-41
topics voltage place length		-41
topics voltage space	31	27		54
topics voltage space <0.6		37
topics voltage space <0.6 length		36
topics voltage space length		24
topics weight															-27						27	29
unit A		-42
unit C		-15
unit L		-40
unit bar		-31
unit cfm		14
unit cm		78
unit ft		-11
unit gal		-42
unit in wc		-48
unit in-lb		29
unit in/ft		26
unit m		-24
unit micron		22
unit mm		26
unit ohm		30
unit psi		72
unit sq ft		28
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
use null decimal	36
use null decimal current		34
use null decimal voltage		24
use null whole area		27
use null whole flow		26
use null whole other		37
use null whole temperature		36
use null whole weight		-26
use other decimal	-28	33
use other decimal length		33
use other half		27
use other half length		28
use other whole area		62
use other whole percent		35
use other whole temperature		-48
use say fine		57
use say fine length		57
use say half		-23
use say half length		-30
use say whole		21
use see whole	-26	-45
use use whole	-24	-35
use use whole length		-31
use work decimal		48
use work quarter length		-29
use work whole	-24
use work whole area		-30
use work whole length		21
use work whole other		-24
use work whole pressure		-26
use work whole weight		31
verb # # current		-9
verb # # percent		25
verb # <q>	-78
verb # <t>		-14
verb # and	27
verb # area		20
verb # at length		-20
verb # cut		19
verb # cut length		19
verb # decimal	18
verb # decimal current		35
verb # decimal length		-9
verb # decimal voltage		24
verb # flow		30
verb # on	-22
verb # other		32
verb # over		34
verb # over length		34
verb # slope		25
verb # temperature		25
verb # the		-16
verb # whole area		15
verb # whole temperature		25
verb # whole weight		-28
verb # within		22
verb # within length		22
verb be ahead	-15	-21
verb be ahead whole	-15
verb be ahead whole length		25
verb be behind						19
verb be behind a	-74
verb be behind about		-26
verb be behind about length		-30
verb be behind and		-16
verb be behind and length		-16
verb be behind are	11
verb be behind at	61
verb be behind by		34
verb be behind by length		30
verb be behind decimal	-41	28
verb be behind decimal length		26
verb be behind fine		35
verb be behind fine length		35
verb be behind half		28
verb be behind half length		27
verb be behind in		20
verb be behind in length		20
verb be behind on	-35
verb be behind out		-16
verb be behind over		-47
verb be behind over length		-47
verb be behind percent		27
verb be behind pressure		20
verb be behind temperature		-16
verb be behind the		-27
verb be behind the length		-27
verb be behind whole percent		27
verb be behind whole temperature		-16
verb blow behind															57							-56
verb bring behind	-30	-59												35
verb bring behind length		-37
verb bring behind whole		-66
verb buy behind		-54
verb buy behind length		-24
verb call behind				36		-17								36
verb check behind		-23
verb come behind	-38	33				-18			22						-17							16
verb come behind length		38
verb come behind whole	-13
verb come behind whole length		14
verb count behind	-37
verb count behind whole	-37
verb cut behind							39
verb cut behind at		29
verb cut behind at length		27
verb cut behind cut	-17
verb cut behind length		31
verb cut behind whole		17
verb cut behind whole length		17
verb do behind		-30
verb do behind whole		-33
verb drill behind	-23			-19
verb drill behind whole	-23
verb drop behind	-35			-14
verb find behind		37
verb find behind length		32
verb finish behind	-21	22		-12
verb finish behind length		22
verb finish behind whole	-21
verb get ahead	-31
verb get ahead whole	-31
verb get behind									21
verb get behind got		74
verb get behind length		-18
verb get behind the	-18
verb get behind whole		-19
verb get behind whole length		-39
verb give behind	31	-36												55
verb give behind whole	31	-27
verb go ahead	-14
verb go ahead whole	-14
verb go behind		37		60
verb go behind length		52
verb go behind whole length		36
verb grab behind	-20
verb grab behind whole	-20
verb hang behind				44
verb hang behind whole		30
verb hang behind whole length		35
verb have ahead	-24
verb have ahead #	-25
verb have ahead whole	-24
verb have behind				27
verb have behind had	-27
verb have behind has	-18
verb have behind whole		-16
verb hit behind	-18								32
verb hit behind whole	-18
verb hold behind		29
verb hold behind held		19
verb hold behind length		22
verb hold behind whole		21
verb lay behind		-31
verb leave ahead		-45
verb leave ahead whole		-45
verb leave behind																30
verb leave behind whole		30
verb leave behind whole length		22
verb make behind									29
verb make behind whole		-20
verb make behind whole length		-19
verb measure behind		35
verb measure behind fine		22
verb measure behind fine length		22
verb measure behind length		30
verb measure behind whole		34
verb move behind	-45	27		-31
verb move behind length		28
verb move behind whole	-45	28
verb move behind whole length		28
verb must behind				48			20
verb need behind	-15	-22
verb need behind length		-31
verb need behind need		-19
verb need behind need length		-19
verb need behind needs	36	56
verb need behind of		-38
verb need behind of length		-38
verb need behind whole	-29	-39
verb need behind whole length		-51
verb null ahead	-28	-47
verb null ahead #	-27
verb null ahead length		-34
verb null ahead whole	-28
verb null behind a		-26
verb null behind a length		-18
verb null behind about		28
verb null behind about length		28
verb null behind all	-24
verb null behind angle		17
verb null behind at	47
verb null behind by	28	26
verb null behind by length		26
verb null behind decimal	74	23
verb null behind good		23
verb null behind good length		23
verb null behind got	-36
verb null behind half		-9
verb null behind half length		-9
verb null behind in		-17
verb null behind in length		-17
verb null behind is		9
verb null behind is length		9
verb null behind maybe		-26
verb null behind maybe length		-26
verb null behind on	-19
verb null behind only	45	33
verb null behind only length		33
verb null behind out		56
verb null behind over		36
verb null behind over length		36
verb null behind that's	-23
verb null behind the	-22
verb null behind there's	-27
verb null behind to		22
verb null behind to length		20
verb null behind whole angle		17
verb open behind	-41			21		-15
verb order behind	-33	-90		-13
verb order behind length		-90
verb order behind whole	-33
verb patch behind				26
verb pick behind	-43			-17
verb pick behind whole	-43
verb pitch behind		30
verb pitch behind length		29
verb prime behind	-32			-19
verb prime behind whole	-32
verb pull behind	-27	29		-20
verb pull behind whole	-27	31
verb put behind															72							-33
verb put behind whole		15
verb put behind whole length		21
verb read behind	53			-26								36							30
verb read behind reads	30
verb read behind whole	55
verb rip behind		45
verb rip behind length		45
verb rip behind to		40
verb rip behind to length		40
verb run behind	-16																				37
verb run behind whole	-23
verb run behind whole length		30
verb sag behind		22
verb sand behind	-43
verb sand behind whole	-43
verb say behind										19		39
verb say behind say		55
verb say behind says	-15	23
verb say behind says length		12
verb send behind		-34
verb send behind length		-34
verb send behind whole		-34
verb send behind whole length		-34
verb set behind				22		28									27
verb set behind to	25
verb shim behind		22
verb shim behind length		22
verb should behind	38																	45
verb should behind be	38
verb should behind whole	26
verb sit behind half		28
verb sit behind half length		28
verb stick behind		53
verb stick behind length		53
verb swap behind	-46	-66		-26
verb swap behind length		-66
verb swap behind whole	-38
verb take behind		-20		18									26
verb take behind length		-25
verb take behind whole		-32
verb take behind whole length		-39
verb tell behind		-69		21
verb tell behind length		-69
verb think behind		18
verb turn behind											33
verb use behind	-24	-21		-13
verb use behind length		-18
verb use behind whole	-24
verb want behind at	55
verb want behind length		18
verb want behind quarter		-44
verb want behind quarter length		-44
verb want behind wants		-25
verb want behind wants length		-25
verb want behind whole		17
verb want behind whole length		46
w # at		26
w # deep	25	48
w # deep length		48
w # long		49
w # long length		49
w # more	-41
w # of	-26
w # on length		-20
w # up		30
w # up length		30
w - #	-27
w <q> #	-43	-43
w a #	-23	-21
w a hole		18
w a hole length		18
w about #		32
w about # area		20
w about by		14
w about by length		13
w about long		24
w about long length		24
w about of		24
w about of length		23
w all #	-27
w at #		35
w at centres		-30
w at centres length		-30
w at off	39	-18
w at off length		-18
w be #		42
w be # length		44
w by #	21	28
w by # length		26
w cut #		20
w cut # length		20
w down #		40
w down # length		40
w every #		30
w every # length		30
w for #	-28
w good #		25
w good # length		25
w had #	-33
w have #	17
w in #	-43
w is #	16
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
w of #	-43
w only #		23
w only # length		23
w out # length		43
w over #	-21
w says #		22
w says to	-39
w the #	-28	-40
w the # length		-35
w to #	12
w up #		38
w up # length		38
w was #		-36
w+1 # decimal		33
w+1 # decimal length		18
w+1 # pressure		31
w+1 # volume		-18
w+1 -	-30
w+1 - whole	-30
w+1 <q>		-13			28								12		-16
w+1 <q> length		-20
w+1 <q> whole		-29
w+1 <q> whole length		-45
w+1 <t>		-35		27											-26
w+1 a	48			-22					-21				-25	129
w+1 above		34
w+1 above length		34
w+1 across	37	40		40									57
w+1 across length		40
w+1 across whole	37
w+1 aff		20
w+1 aff length		20
w+1 after		47										-25							31
w+1 all		-16
w+1 all length		-17
w+1 all whole		-19
w+1 all whole length		-21
w+1 and				23
w+1 and fine		27
w+1 and fine length		25
w+1 are	-16
w+1 are whole	-16
w+1 at	26	25		-17					20	73
w+1 at fine		23
w+1 at fine length		23
w+1 at half		16
w+1 at half length		16
w+1 at length		29
w+1 at whole	26	22
w+1 at whole length		31
w+1 before																			42
w+1 before whole	-25
w+1 behind		46
w+1 behind length		46
w+1 below		54
w+1 below length		54
w+1 below whole		39
w+1 below whole length		39
w+1 between		40
w+1 between length		40
w+1 board	-22
w+1 board whole	-22
w+1 boards	-26
w+1 boards whole	-26
w+1 brackets	-18
w+1 brackets whole	-18
w+1 by	-18					30					-35
w+1 by length		-9
w+1 by whole	-20	-13
w+1 by whole length		-19
w+1 centers		26
w+1 centers length		26
w+1 centres		-19
w+1 centres length		-19
w+1 centres whole		-30
w+1 centres whole length		-30
w+1 cold		19
w+1 cold whole		19
w+1 deep	40			46		44
w+1 deep fine		-62
w+1 deep fine length		-62
w+1 deep half		41
w+1 deep half length		41
w+1 deep quarter		44
w+1 deep quarter length		44
w+1 deep whole	41	50
w+1 deep whole length		50
w+1 for	-18			27											47							-48
w+1 for length		-30
w+1 for whole	-18
w+1 from		34
w+1 from length		34
w+1 from whole		33
w+1 from whole length		33
w+1 gap		29
w+1 gap length		29
w+1 hangers	-15
w+1 hangers whole	-15
w+1 high	15	34				31		36
w+1 high fine		19
w+1 high fine length		19
w+1 high length		34
w+1 high whole		30
w+1 high whole length		27
w+1 higher		21
w+1 higher length		21
w+1 higher whole		21
w+1 higher whole length		21
w+1 hole		41
w+1 hole length		41
w+1 hole quarter		24
w+1 hole quarter length		24
w+1 holes	-28			-19
w+1 holes whole	-28
w+1 in	16								55
w+1 in fine		29
w+1 in fine length		29
w+1 in quarter		12
w+1 in whole	16	-23
w+1 in whole length		-13
w+1 is	-27			-16
w+1 is whole	-27
w+1 layers	-31
w+1 layers whole	-31
w+1 left whole		44
w+1 long	15			50				41
w+1 long whole		34
w+1 long whole length		34
w+1 low		17
w+1 lower		31
w+1 lower length		31
w+1 lower whole		29
w+1 lower whole length		29
w+1 max	-31													21
w+1 more	-24
w+1 more whole	-39
w+1 no	-53	-20
w+1 no whole	-53
w+1 nos	-24
w+1 nos whole	-24
w+1 now	44	23		-15					71						48			22				-28
w+1 now whole	42	45
w+1 oc		24
w+1 oc length		24
w+1 oc whole		24
w+1 oc whole length		24
w+1 of	-26
w+1 of whole	-26
w+1 of whole area		-17
w+1 off		38		69
w+1 off fine		33
w+1 off fine length		33
w+1 off length		40
w+1 off quarter		-21
w+1 off quarter length		-21
w+1 off whole		52
w+1 off whole length		55
w+1 on				-14		20															36
w+1 on half		-37
w+1 on half length		-37
w+1 on whole		42
w+1 on whole length		44
w+1 or		34
w+1 or length		34
w+1 or whole		34
w+1 or whole length		34
w+1 out		51
w+1 out fine		49
w+1 out fine length		49
w+1 out length		53
w+1 out of plumb		36
w+1 out of plumb length		23
w+1 over		37
w+1 over fine		30
w+1 over fine length		30
w+1 over half		25
w+1 over half length		25
w+1 over length		37
w+1 over whole		37
w+1 over whole length		37
w+1 panels	-17
w+1 panels whole	-17
w+1 posts	-13
w+1 posts whole	-13
w+1 screws	-21
w+1 screws whole	-21
w+1 short	-31	44
w+1 short half		37
w+1 short length		43
w+1 short whole	-31
w+1 shy		25
w+1 shy length		25
w+1 side	-21
w+1 side whole	-21
w+1 so		-26
w+1 so length		-26
w+1 the	-42	12		-11
w+1 the half		27
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
w+1 top		30
w+1 top length		30
w+1 toward		30
w+1 toward length		31
w+1 treads	-19
w+1 treads whole	-19
w+1 under whole		60
w+1 up	19			47		30			34
w+1 up whole	19	57
w+1 up whole length		57
w+1 when	22					27			48
w+1 when whole	22
w+1 where		75
w+1 which															35
w+1 wide	9			61		22
w+1 wide fine		40
w+1 wide fine length		40
w+1 wide quarter		6
w+1 wide quarter length		6
w+1 wide whole	9
w+1 with	27			-16					51
w+1 with whole	27	40
w+2 # # pressure		31
w+2 # # volume		-18
w+2 - <q>	-30
w+2 <q> #	-83	-58		-30											-23
w+2 <q> # length		-34
w+2 <t> #		-11		36											-31
w+2 across #		26
w+2 across # length		26
w+2 and <q>		-23		28
w+2 and <q> length		-23
w+2 at the	27	28							46	54
w+2 at the length		22
w+2 behind the		38
w+2 behind the length		38
w+2 below the		34
w+2 below the length		34
w+2 by <q>		-25
w+2 by <q> length		-25
w+2 by the		48		34					-17	35	-30	29
w+2 by the length		48
w+2 centers #		24
w+2 centers # length		24
w+2 centres #		28
w+2 centres # length		28
w+2 cold #		19
w+2 deep #	30			21		38
w+2 down #		-17
w+2 down # length		-19
w+2 for <q>		27
w+2 high #		31
w+2 high # length		30
w+2 hole #		21
w+2 hole # length		21
w+2 in #		-17
w+2 in # length		30
w+2 in <q>		60
w+2 in <q> length		60
w+2 in the									30
w+2 in the length		-9
w+2 long #	33					51		45
w+2 low on		12
w+2 low on length		12
w+2 lower than		17
w+2 lower than length		17
w+2 max #	-31													21
w+2 nos #	-24
w+2 now #	53	47							75						49			23				-29
w+2 of em	-45			-17
w+2 of it		-15
w+2 of it length		-24
w+2 of the	-19	34
w+2 of the length		34
w+2 of them	-34			-14
w+2 off #		14
w+2 off # length		14
w+2 off the	24			65
w+2 on center		37
w+2 on center length		37
w+2 on the	30	16				37						32			-19
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
w+2 to <q>	15			25								20
w+2 to go	-48
w+2 to the	51			68		47			-15
w+2 toward the		27
w+2 toward the length		28
w+2 up #		30
w+2 up # length		30
w+2 wide #	12			45		37
w-1 # current		-20
w-1 # decimal		35
w-1 # decimal length		31
w-1 # percent		25
w-1 # quarter		27
w-1 # quarter length		26
w-1 # weight		-36
w-1 # whole current		-23
w-1 # whole percent		25
w-1 # whole weight		-36
w-1 (		-61
w-1 ( length		-52
w-1 +	-24
w-1 + whole	-24
w-1 -	-34
w-1 - whole	-34
w-1 2 x length		59
w-1 <n>	-30
w-1 <n> length		24
w-1 <n> whole	-30
w-1 <q>	-33	-49
w-1 <q> length		-27
w-1 <q> whole	-16	-49
w-1 <q> whole length		-23
w-1 <t>	-24	13
w-1 <t> length		47
w-1 <t> whole	-24
w-1 <t> whole length		36
w-1 @ whole length		-43
w-1 a	-35	-15		-17	28	-22								31
w-1 a whole	-31	-35
w-1 about	10					38			-22		25
w-1 about area		20
w-1 about fine		34
w-1 about fine length		34
w-1 about quarter		41
w-1 about quarter length		41
w-1 about whole	10
w-1 about whole area		20
w-1 all	-26
w-1 all whole	-26
w-1 and quarter		-19
w-1 and quarter length		-19
w-1 are	14			33		46
w-1 are quarter		44
w-1 are quarter length		44
w-1 are whole	11	-51
w-1 are whole length		-51
w-1 at		23		45
w-1 at fine		54
w-1 at fine length		54
w-1 at percent		23
w-1 at pressure		35
w-1 at weight		19
w-1 at whole		26
w-1 at whole length		-16
w-1 at whole percent		23
w-1 at whole pressure		33
w-1 at whole weight		19
w-1 back		42
w-1 back length		42
w-1 be				41	25										-24			21
w-1 be whole	22	-24
w-1 be whole length		-24
w-1 between	-25
w-1 between whole	-25
w-1 bottom		34
w-1 bottom length		34
w-1 bottom whole		36
w-1 bottom whole length		36
w-1 by	-20	23			16
w-1 by half		44
w-1 by half length		44
w-1 by length		22
w-1 by quarter		35
w-1 by quarter length		35
w-1 by whole	-20
w-1 count	-35
w-1 count whole	-35
w-1 cut	-28	23						21
w-1 cut length		23
w-1 cut whole	-44	20
w-1 cut whole length		20
w-1 down		54
w-1 down length		50
w-1 down whole		33
w-1 down whole length		25
w-1 drop		63
w-1 em	-38
w-1 em whole	-38
w-1 every	89	71		122	-21
w-1 every length		71
w-1 every whole	89	71
w-1 every whole length		71
w-1 falls		19
w-1 falls length		19
w-1 for	-24	-23		-33		26								28
w-1 for whole	-24
w-1 for whole length		54
w-1 from	32			29		32						36
w-1 from whole	32
w-1 gap		32
w-1 gap length		32
w-1 gap whole		24
w-1 gap whole length		24
w-1 get													36
w-1 good		39
w-1 good half		31
w-1 good half length		31
w-1 good length		39
w-1 got	-16																			29
w-1 got whole	-16
w-1 had	-28
w-1 had whole	-28
w-1 has	-21
w-1 has whole	-21
w-1 have	-16
w-1 have whole	-16
w-1 held		20
w-1 held whole		21
w-1 holding		-22
w-1 hole		52
w-1 hole length		52
w-1 in	-48					-26											31
w-1 in whole	-29	-25
w-1 in whole length		-11
w-1 is				39
w-1 is fine		38
w-1 is fine length		38
w-1 is half		31
w-1 it				30															34
w-1 it's				41					39
w-1 it's fine		52
w-1 it's fine length		52
w-1 it's half		50
w-1 it's half length		50
w-1 it's quarter		33
w-1 it's quarter length		34
w-1 it's whole		22
w-1 it's whole length		13
w-1 like		33													-23							16
w-1 like half		21
w-1 like half length		21
w-1 like length		35
w-1 like whole		26
w-1 like whole length		28
w-1 long	-34	-7
w-1 long length		-7
w-1 long whole	-34
w-1 measure		33
w-1 need		-19
w-1 need length		-19
w-1 needs	35	56		39				25
w-1 not	-52			-16
w-1 not whole	-52
w-1 now	-23
w-1 now whole	-23
w-1 of	-33	-23
w-1 of fine		-17
w-1 of fine length		-17
w-1 of half		-32
w-1 of half length		-32
w-1 of length		-28
w-1 of whole	-33
w-1 of whole length		-13
w-1 off	-19	39
w-1 off length		39
w-1 off whole	-19
w-1 on	-36
w-1 on whole	-36
w-1 only				49		31									15
w-1 other	-29
w-1 other whole	-29
w-1 out	16									28			31
w-1 out length		40
w-1 out quarter		43
w-1 out quarter length		43
w-1 out whole		-25
w-1 over	-32	53		-10					52		-33
w-1 over length		55
w-1 over whole	-32
w-1 past									39													-30
w-1 put		-61
w-1 rated																					30
w-1 read	44	42										49									74
w-1 read whole	41	42
w-1 reading	40	38		-21						26	-30	40	32					21
w-1 reading whole	29	34
w-1 reads	38	19		-30					40				45	-30					23
w-1 reads decimal		20
w-1 reads whole	29
w-1 run		23
w-1 run length		23
w-1 said															35							-37
w-1 say		55
w-1 say length		37
w-1 say whole		51
w-1 says		23							25
w-1 says length		14
w-1 says whole		51
w-1 set									54				-25
w-1 short		51
w-1 short length		51
w-1 take		28
w-1 take length		28
w-1 that's	-23
w-1 that's whole	-23
w-1 the	-27	-57
w-1 the half		-32
w-1 the length		-51
w-1 the whole	-26	-57
w-1 the whole length		-48
w-1 there's	-26
w-1 there's whole	-26
w-1 to	21	54					15		34						21
w-1 to other		22
w-1 to quarter		19
w-1 to quarter length		19
w-1 to whole	16
w-1 to whole other		22
w-1 took	-37
w-1 took whole	-27
w-1 under												35
w-1 up		28
w-1 up half		34
w-1 up half length		30
w-1 up length		41
w-1 up whole length		27
w-1 wall		-50		33		-28						30
w-1 wall length		-50
w-1 want				-15		22
w-1 wants		-15											26
w-1 wants length		-21
w-1 was				-21		-23			29								30	-22
w-1 was fine		-14
w-1 was fine length		-14
w-1 was whole		-25
w-1 with	-34	-13
w-1 with length		-39
w-1 with whole	-34
w-1 within		39
w-1 within length		39
w-2 # # current		-20
w-2 # # percent		25
w-2 # # weight		-36
w-2 # <q>	-42												-20
w-2 # about length		-10
w-2 # all	-27					-13
w-2 # cut	-16
w-2 # it's				43					41
w-2 # other	-22
w-2 # that's	-23
w-2 # there's	-26
w-2 # want				-12											23
w-2 <q> -	-28
w-2 <q> and	-39	23
w-2 <q> and length		23
w-2 <q> at		-34
w-2 <q> at length		-36
w-2 <q> by		-26		25	25
w-2 <q> by length		-26
w-2 <q> of	-32
w-2 <q> to	-35
w-2 <q> x	-32
w-2 a good		38
w-2 a good length		38
w-2 by about		14
w-2 by about length		14
w-2 cut at		16
w-2 cut at length		16
w-2 down to	42	31		-16					50						29					22
w-2 down to length		26
w-2 for about		30
w-2 for about length		30
w-2 i got				16
w-2 in about		13
w-2 in at	37			44	-27				36						-25			26				20
w-2 is a				-19										49
w-2 it about		-30
w-2 it about length		-30
w-2 it at	-10								33
w-2 it to	40			40											38
w-2 it was	39								68
w-2 it's a		-62
w-2 of the	-23
w-2 out at length		-6
w-2 out of	-29
w-2 short by		-20
w-2 short by length		-20
w-2 should be	40																	41
w-2 the bottom		35
w-2 the bottom length		35
w-2 the other	-19
w-2 there was	-29
w-2 to be	-44				30										-39
ws # COP	-23
ws # PREP		34
ws # Vworkb		32
ws # tarea	-33
ws # tdefect	-25
ws # tfixture	-25
ws # tmaterial	-25
ws # tsurface	-32
ws # w		-11
ws - #	-27
ws <q> #	-43	-43
ws <q> w	37
ws <t> w		20
ws <t> w length		20
ws a #	-23	-21
ws a PREP	-64
ws a tsurface		22
ws a tsurface length		22
ws a w		65
ws a w length		65
ws about #		32
ws about # area		20
ws about PREP		35
ws about PREP length		37
ws all #	-27
ws and w	23	21
ws and w length		21
ws at #		35
ws at PREP	59	-8
ws at PREP length		-21
ws be #		42
ws be # length		44
ws by #	21	28
ws by # length		26
ws cut #		20
ws cut # length		20
ws cut w		12
ws cut w length		12
ws down #		40
ws down # length		40
ws every #		30
ws every # length		30
ws falls PREP		19
ws falls PREP length		19
ws for #	-28
ws good #		25
ws good # length		25
ws got w	-29
ws had #	-33
ws have #	17
ws in #	-43
ws in PREP		45
ws in PREP length		45
ws is #	16
ws is PREP		20
ws it #		28
ws it # length		23
ws it w	19	66
ws it w length		66
ws it's #	21
ws it's tdefect		34
ws it's tdefect length		34
ws like #		22
ws like # length		23
ws maybe #		25
ws maybe # length		20
ws maybe PREP		-31
ws maybe PREP length		-36
ws not #	-49
ws of #	-43
ws of w	-38
ws on w	-18
ws only #		23
ws only # length		23
ws only PREP		-38
ws only PREP length		-38
ws only w		28
ws only w length		28
ws out # length		43
ws over #	-21
ws says #		22
ws says PREP	-13
ws take PREP		28
ws take PREP length		28
ws the #	-28	-40
ws the # length		-35
ws the w	-31	-38
ws the w length		-38
ws there's PREP	-25
ws to #	12
ws to PREP		36
ws to PREP length		29
ws up #		38
ws up # length		38
ws up PREP		22
ws up PREP length		22
ws up w		23
ws was #		-36
ws was w		-25
ws was w length		-27
`;
