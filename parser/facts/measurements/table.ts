/** Written by tests/learn/readings.ts: what is seen of a figure, and hundredths for bare, said, near, in, ft, mm, cm, m, F, C, deg, %, V, A, psi, bar, kPa, in wc, ohm, cfm, uF, lb, W. */
export const READINGS = `
any	93	220
any power		-16
any torque		18
any volume		-18
apart			-49
begin false decimal current		36
begin false decimal length		-20
begin false decimal percent		32
begin false decimal voltage		38
begin false fine slope		30
begin false quarter slope		38
begin false whole	-21
begin false whole angle		8
begin false whole power		-32
begin false whole voltage		-19
begin true decimal		43
begin true whole current		-35
begin true whole weight		-49
bound 	-27
bound  power		-25
bound  torque		18
bound  volume		-30
bound about	38	34		31		21
bound about area		44
bound about length		35
bound about volume		33
bound atLeast	-53			17
bound atMost						-25
bound centers		53
bound centers length		53
bound hair		36
bound hair length		35
bound over				-15					30		-36
bound over length		25
bound under	-38											20
clause before			30
clause before V			48
clause before cfm			24
clause before ft			31
clause behind			16
clause behind deg			10
clause behind ft			48
clause behind m			58
clause false	-25
clause false power		-16
clause false torque		18
clause false volume		-18
clause true percent		-23
clause true pressure		21
digits digits decimal	21					-19
digits digits decimal area		23
digits digits decimal current		41
digits digits decimal other		13
digits digits decimal pressure		28
digits digits decimal voltage		39
digits digits whole angle		10
digits digits whole current		-54
digits digits whole other		35
digits digits whole pressure		24
digits digits whole torque		34
digits digits whole weight		-38
digits words decimal	-21	11		-26				30										18	28
digits words decimal length		9
digits words quarter slope		37
digits words whole	-25
digits words whole angle		-43
digits words whole current		40
digits words whole other		-69
digits words whole pressure		-36
digits words whole temperature		35
digits words whole voltage		-27
end false # current		-25
end false # flow		26
end false # percent		35
end false # voltage		10
end false (		-32
end false +	-27
end false -	-24
end false <q>	-38	-44
end false <q> length		-30
end false <t>	-24	27
end false <t> length		30
end false @		55
end false @ length		55
end false a	-13
end false a length		8
end false abt		-20
end false all	-23
end false are	-24	34
end false are length		34
end false at percent		60
end false at pressure		32
end false at weight		29
end false back		27
end false back length		27
end false be	23
end false between	-24
end false by	-31
end false count	-21
end false cut	-10	30
end false cut length		30
end false decimal current		40
end false decimal length		-21
end false decimal other		-13
end false decimal voltage		33
end false down		24
end false drilled		10
end false drilled length		10
end false drops		23
end false drops length		21
end false every		60
end false every length		60
end false fine slope		25
end false for	-13	-72
end false good		47
end false good length		47
end false got	-19
end false got length		-30
end false has	-16
end false have	-38	-58
end false held		27
end false hole		32
end false hole length		32
end false in	-13
end false it	20
end false like length		33
end false long	-24
end false maybe length		-25
end false measured		20
end false need		-15
end false need length		-15
end false needs		55
end false needs length		37
end false not	-16
end false now	-30
end false of	-22	-47
end false of length		-44
end false off	-23	31
end false off length		31
end false on	-19
end false other	-19
end false over	-42	43
end false over length		51
end false put		-68
end false quarter slope		37
end false read	41
end false reading	23	26
end false reads	26
end false run		22
end false run length		27
end false sagging		23
end false sagging length		23
end false say		30
end false see	-23
end false set	-50
end false that's	-44
end false that's length		-20
end false the	-23	-50
end false the length		-49
end false there's	-24
end false there's length		24
end false through	-22
end false to	30	20
end false to length		29
end false took	-14
end false under	-32
end false up		10
end false up length		21
end false wall	-20	25
end false wall length		25
end false want		-41
end false wants	-11
end false was		25
end false was length		21
end false whole	-30
end false whole area		33
end false whole current		-52
end false whole volume		-24
end false with	-27
end false within length		36
end false x		-25
end false x length		-22
end true # percent		-23
end true # pressure		21
end true (		-29
end true -	-35
end true <q>	-49	-23
end true <t>		-10
end true @ length		-12
end true a	-35
end true a length		-27
end true about		37
end true about area		19
end true all	-32
end true at	11	31
end true at length		24
end true at percent		-19
end true at temperature		21
end true back		32
end true back length		32
end true by		27
end true by length		26
end true cut		22
end true cut length		20
end true decimal	17	41
end true decimal length		22
end true down		37
end true down length		35
end true every	31	26
end true every length		26
end true good		29
end true good length		29
end true got		42
end true had	-29
end true have	16
end true in	-44
end true is	21
end true it	-61	27
end true like		18
end true like length		20
end true maybe		36
end true maybe length		33
end true need		24
end true need length		24
end true not	-48
end true of	-42
end true of length		-13
end true on	-38
end true only	13
end true only length		19
end true other	-32
end true out length		34
end true quarter slope		16
end true reads	29	20
end true reads other		-28
end true the	-23	-22
end true to		29
end true under		43
end true up		35
end true up length		35
end true wanted	19
end true was		-21
end true whole other		-25
end true whole power		-58
end true whole volume		11
end true with		-45
end true x		-18
form decimal area		26
form decimal current		37
form decimal percent		32
form decimal voltage		39
form decimal weight		26
form fine slope		30
form half											43
form quarter slope		38
form whole	-29
form whole current		-30
group one	-28
group one decimal area		26
group one decimal current		34
group one decimal percent		32
group one decimal voltage		39
group one decimal weight		26
group one fine slope		30
group one half											43
group one quarter slope		38
group one torque		18
group one volume		-18
group one whole	-30
group pair1					23
group pair1 length		31
group pair1 whole		19			23
group pair1 whole length		38
group pair2		20		44
group pair2 decimal		20
group pair2 decimal length		20
group pair2 half		-24
group pair2 half length		-24
group pair2 length		20
group pair2 quarter		27
group pair2 quarter length		27
group pair2 whole		16		43
group pair2 whole length		16
group pair3		-17
group pair3 length		-17
group range1	-31	-13
group range1 length		-30
group range1 whole	-31
group range1 whole length		-24
head # current		17
head # pressure		25
head # volume		-20
head a	43					-13								120
head aff		25
head aff length		25
head apart length		35
head away		32
head away length		29
head back								45
head baluster	-16
head board	-24
head bottom		34
head bottom length		34
head box		-20
head bracket	-22
head c		39
head c length		39
head came					49
head center		45
head center length		45
head cold		24
head cold pressure		25
head corner	-22	28
head corner length		29
head deep	32			67		31
head done	-32
head end	-18
head h	-29
head head	-53
head high	13	31				43		29
head high length		20
head higher		27
head higher length		27
head hole		37
head hole length		37
head hung	-20			-13
head layer	-15
head long						31		31
head lower		33
head lower length		33
head max						27
head nos	-26
head ones		-56
head ones length		-56
head outlet	-19
head pane	-14
head panel	-20
head riser	-32			-18
head round		-35
head round length		-35
head screw	-23
head shy		20
head shy length		20
head side	-25
head spot	-14
head stud	-16
head the	-30	38
head thick	32					62
head tile	-21
head time	-17			-15															34
head top		35
head top length		35
head tread	-25
head turn	-22
head wall	-21
head wide				35		31
headsort # current		17
headsort # decimal	19	23
headsort # decimal area		26
headsort # decimal current		27
headsort # decimal percent		32
headsort # decimal voltage		39
headsort # one current		21
headsort # one pressure		25
headsort # one volume		-20
headsort # pair1		33
headsort # pair1 length		57
headsort # pressure		25
headsort # quarter slope		26
headsort # range1	-31	-19
headsort # range1 length		-38
headsort # volume		-20
headsort # whole power		-26
headsort # whole pressure		23
headsort DET		-21
headsort DET one	-15	-23
headsort DET one length		-19
headsort DET whole	-29	-39
headsort DET whole length		-33
headsort OPR	-30	-56
headsort OPR length		-56
headsort OPR one	-30	-56
headsort OPR one length		-56
headsort OPR whole	-30	-56
headsort OPR whole length		-56
headsort PREP pair1		24
headsort PREP pair1 length		24
headsort Votherp	-17
headsort Votherp one	-17
headsort Votherp whole	-17
headsort Vworkb	-46
headsort Vworkb one	-32
headsort Vworkb whole	-46
headsort Vworkb whole length		-29
headsort Vworkbpp	-27	-24
headsort Vworkbpp length		-15
headsort Vworkbpp one	-27
headsort Vworkbpp whole	-27
headsort Vworkpp	-18	-29
headsort Vworkpp one	-37	-21
headsort Vworkpp pair2	78
headsort Vworkpp whole	-23
headsort Vworkpp whole length		44
headsort Vworks	-30
headsort Vworks one	-26
headsort Vworks whole	-30
headsort goods	-24	-31
headsort goods decimal	-83
headsort goods length		-23
headsort goods one	-26	-34
headsort goods one length		-27
headsort goods whole	-22	-25
headsort tarea	-17
headsort tarea one		-22
headsort tarea whole	-17	-21
headsort trole length		48
headsort trole one length		48
headsort tsurface	-25
headsort tsurface one	-32
headsort tsurface whole	-25	-11
headsort tsurface whole length		-23
headsort tsurfaceVworkb	-28
headsort tsurfaceVworkb one	-28	-20
headsort tsurfaceVworkb one length		-36
headsort tsurfaceVworkb whole	-28
headsort tsurfaceVworks	-17
headsort tsurfaceVworks one	-17
headsort tsurfaceVworks whole	-17
headsort ttool one		22
headsort ttool one length		12
headsort ttool whole		-16
headsort ttool whole length		-28
headsort w	-21
headsort w decimal		47
headsort w one	-23
headsort w one pressure		-28
headsort w one weight		44
headsort w pair2	50	51
headsort w pair2 length		51
headsort w pressure		-28
headsort w weight		44
headsort w whole	-23
headsort w's	-31	-35
headsort w's one	-31	-35
headsort w's whole	-26
if false	-27
if false power		-16
if false torque		18
if false volume		-18
if true	-50	-26
if true length		-26
is false decimal none current		34
is false decimal none length		-20
is false decimal none voltage		29
is false decimal own	49	54
is false decimal part		-14
is false half own		15
is false half own length		15
is false half person		-34
is false half person length		-28
is false half tells		-35
is false half tells length		-35
is false quarter material		-15
is false quarter material length		-15
is false quarter part		29
is false quarter part length		25
is false whole area		32
is false whole area length		36
is false whole material	-23	32
is false whole material percent		18
is false whole none	-46
is false whole none percent		24
is false whole none temperature		17
is false whole none voltage		-36
is false whole own	-21
is false whole own volume		-30
is false whole part	-17
is false whole part voltage		31
is false whole person	-21
is false whole person area		-23
is false whole person percent		-47
is false whole person volume		-31
is false whole pointer current		44
is false whole pointer voltage		-50
is false whole pointer volume		30
is false whole surface	-13
is false whole surface angle		18
is false whole tells length		-10
is false whole tool	-16
is false whole tool length		32
is true fine fixture		-32
is true fine fixture length		-32
is true fine material		22
is true fine material length		22
is true fine pointer		-13
is true fine pointer length		-15
is true half material		24
is true half material length		24
is true half pointer		-11
is true half pointer length		-11
is true half surface		23
is true half surface length		23
is true quarter own		38
is true quarter own length		36
is true quarter pointer		60
is true quarter pointer length		60
is true quarter surface		41
is true quarter surface length		41
is true whole area		17
is true whole fixture	40
is true whole none	16
is true whole own	-29	59
is true whole own length		38
is true whole person length		-38
is true whole pointer		-24
is true whole pointer length		-46
is true whole surface	61
is true whole surface length		42
mate pair			28
mate pair ft			47
next add				51
next ask				59		21
next asked									31
next attic				38									25
next b					48
next bad										42
next bar						37
next base				-18								60
next bath									-19	43
next bedroom									24
next big													36
next bit									23
next black					33
next blade				-41					-19											68
next board				35
next bolt				-34
next bottom				27		31				25
next bracket				61				19
next breaker									31
next broken						-29
next buy						-26
next cabinet				50
next call				34					-17	24					-19
next capped															-22
next carpet						-23
next change				32
next check									33
next checked				28
next choked																		46
next clear				15
next client						-20			-33	36	-27
next clip														30
next close				-30
next closet				33
next coat												-20
next coil				-29					57									22
next cold				44		20
next corner						34
next counter				-11
next cover				-13					38			36
next cut				19
next cut out																	45
next dead						18									29
next deep				48									48
next door									24
next drain				-33
next drawing				23							58
next drill				-36		-23	17
next drilled				22									30
next drop				51								28	50
next dropped									34
next dry				-21
next drywall				-16
next duct																				-33
next dug											32
next edge						23
next enough				-16						46								-21
next epoxy				-16	41	31			19
next except						50
next fall						-25
next figure				-23	44
next filled						35
next find									26		-22
next first coat						-12
next flat				35
next floor				39	20
next frame									30
next full				34
next gap				29		-42							30
next garage									32
next gave						42
next glass						26						-37					20
next glue				-15																		16
next glued						61
next goes				48
next going						54
next gone				-20
next ground									-19		34
next guy				42
next hair				-15		23			53											40
next half				-25
next hang														41
next hanging				47																		31
next happy									20
next head				43
next heat				-21					28	23			40
next held															50							-59
next high				-33					24
next hinge				-27
next hit								60
next hits				-38
next hole						23				18
next hose																	36
next house				-21					-19				41				26
next hung				-40											16
next inspector				60											29
next jamb				31
next joist				60
next keep				40		17							20
next keys												-34
next kit				-13	45				-20
next kitchen																				15
next label				-22															34
next ladder															-12							11
next laid				18
next landing				-26
next last				45
next latch						30
next leave						-18									26	33						-30
next ledger				-22
next left				22
next lid				-7											-20							20
next lift						37
next live														26						61
next lock																						62
next long						33
next loop						-27			19
next loose				-26									27
next low						-13
next make													26
next mastic					29															39
next me				-11
next measured											19
next meter						23
next move				40
next moved																41
next neighbor												20
next new																					17
next oak						38									-20							-25
next old				-17	23										-30
next one						21
next open																				34
next opened																						-40
next opening				20
next order												-28
next ordered				60		-28		29							59
next other				37
next oven						35
next owner						-19						-20		25	22
next packed				-19					58						25
next paint												-29
next painter				-22
next panel													19
next part				35
next pass				49																37
next patch				29																25
next pipe					51													25
next plaster						-17
next plate									18					34
next plug						-20
next plumber									32
next ply						28
next point												12
next post				34		-14
next pull				87														-15
next pump				50	48	-23			22
next push															-24							11
next put				24
next rail										36
next ran				35	26				16
next reach				52
next read																		24
next regulator															94							-49
next replaced				-16																	34
next reset				-12
next return									36	16
next rock				22		7
next room				36					35
next rotted																		-14
next round				31		64
next run				26						29			20
next running				-15					27			34	23
next said				-10
next sand				-14
next says				-9		-19			66					44	-18				69
next screw							28
next screwed				22
next scribed									-20
next seal													29
next see								26	-19
next sheet				-18						28									55
next shop				-24					-31		40
next short				29		-34
next shut				-24					59
next shy				-7
next sitting				-19		-17
next size								65
next spare				30		48
next split										23
next spot																	35
next stain				-26
next start																28
next step				50		30
next stick						-26
next stone													-25
next straight				53
next stuck				-15																	54
next stud				33
next subfloor				37								68
next supplier				-12		-31
next supposed				17					43									40
next swap													40	-21
next switch				-14											65
next tall				51
next tank									37
next tap																	37
next tell					35							-19
next tenant				-16	43
next the lady				28
next the wrong								24
next thermostat				35
next thing										25	15
next think									28
next thinset					50
next tile				-21		-13						32
next time												33
next told						32								27
next too short				37		25
next took													37							29
next top						27
next touch				-37
next trap				-15		52			-18
next trimmed				39
next trip									31				-26
next truck				39														-18
next tub				42											-21
next turned						23			51											29
next twice						63
next upstair				-32					-13						23
next us					47
next use				-18
next used				-37	33													19
next van						-16
next vent				41
next wait										27
next wall									28
next want				29	17	62			29											17
next way				-41	26	46					44
next went															40
next wet				40
next wide				-14		17
next window				26
next wire													23
next wood										45
next work				-18									48
next x				-28																15
not false power		-16
not false torque		18
not false volume		-17
not true	-34
note			20
note bar			33
note cfm			61
note cm			23
note deg			9
note ft-lb			41
note gpm			59
note in-lb			45
note kPa			122
note kW			-16
note lpm			51
note micron			34
note ohm			21
note psi			18
note sq ft			33
note sq m			42
noun #	-44	-15
noun # area		-87
noun # flow		35
noun # metric						-16				20							20
noun # pressure		10
noun # temperature		-45
noun # voltage		-7
noun # volume		-24
noun # weight		21
noun ^anything	-30
noun ^attic		40
noun ^bottom	-33	57		-16
noun ^bottom length		51
noun ^bracket	-18
noun ^carpet		20
noun ^corner length		24
noun ^deep				-20
noun ^deep length		40
noun ^door						33
noun ^drain		-40
noun ^drain length		-36
noun ^drop	-49			-13
noun ^fence	-42			-33								21
noun ^floor	45	33		59
noun ^floor length		28
noun ^floor us				66
noun ^frame		51
noun ^frame length		51
noun ^front	7				30			23
noun ^gap		45
noun ^gap length		45
noun ^garage		-47
noun ^hole							16
noun ^joist length		-7
noun ^kitchen	-29
noun ^light		35
noun ^long		-22
noun ^long length		-22
noun ^lot	-17
noun ^me	-44	-68				-11
noun ^me length		-52
noun ^meter		32
noun ^meter percent		27
noun ^middle		-28
noun ^middle length		-28
noun ^more	-29
noun ^new		-82											23
noun ^new length		-99
noun ^panel	-31	39		-22
noun ^panel length		36
noun ^pipe		39
noun ^plate		42
noun ^post	-23	56
noun ^post length		56
noun ^pressure				15											21
noun ^rail	-54
noun ^rail length		29
noun ^screw		-39
noun ^screw length		-54
noun ^shelf		24
noun ^shelf length		24
noun ^short	-18	-33
noun ^short length		-33
noun ^side		33				41
noun ^side length		33
noun ^side none						39
noun ^slab				-22		32
noun ^sweep		49
noun ^sweep length		49
noun ^tape										35
noun ^thermostat	18
noun ^tread	-42
noun ^trim	-24
noun ^wall		22							26
noun ^wall length		37
noun ^wall us									32
noun ^washer	-20			22
noun ^way		49
noun ^wide		26
noun ^wide length		26
noun ^window	22	-39		50
noun ^window length		-39
noun backset		35
noun backset length		35
noun base		58
noun base length		58
noun better	-48					-32
noun bottom	22	40				25				24
noun bottom length		39
noun bout		28
noun bout length		28
noun bowl															26
noun breaker	-48
noun cable		54
noun cable length		54
noun cap				-24					-21		-28										93
noun ceiling	-17	31						30
noun ceiling length		72
noun closet		26
noun closet length		24
noun code				33
noun code us				37
noun corner						29					49
noun curb		25
noun curb length		25
noun cutout		41
noun cutout length		41
noun deep		-34
noun deep length		-34
noun door	53	42		58		30
noun door length		42
noun door us				63
noun drain		-13
noun drain length		-18
noun drawing	20			20										45
noun drop		-18		23									25
noun drywall		36
noun drywall length		38
noun duct		-17
noun duct length		-17
noun edge		31
noun edge length		30
noun first	-25
noun flange		24
noun flange length		24
noun floor	-24	32		-10
noun footing		43
noun footing length		43
noun fridge				26		18			-39
noun fridge us				30					-18						33
noun front	-43
noun gap		46
noun gap length		46
noun glue				25
noun hall	-24			-16
noun handrail		52
noun handrail length		52
noun heater		-34
noun hinge	-31
noun hole	29			42		45
noun hole us				74
noun house	37			-47	67
noun instead				36
noun jamb		-23
noun jamb length		-23
noun joint		59
noun joint length		59
noun joist		47
noun joist length		50
noun kitchen	-42	45
noun landing		16
noun landing length		16
noun last	-29	39
noun last length		39
noun latch		27
noun latch length		27
noun legs		32
noun legs length		32
noun lid		-18
noun lid length		-18
noun lift																						23
noun line		43
noun long	-33	7
noun long length		7
noun me	23	-48				25								39
noun me length		-50
noun meter	-40					-21						29
noun meter percent		34
noun middle		16
noun middle length		16
noun mirror		60		34
noun mirror length		60
noun mirror us				34
noun more		-40
noun more length		-40
noun new none				20
noun new us				-36
noun niche	19	54		22			22
noun niche length		54
noun number	-22	20
noun number length		20
noun one	21	-10
noun opening				35
noun opening us				26
noun overhang		46
noun overhang length		46
noun paint	-30			-27								23
noun panel	-79	21		-18		-41									-18							20
noun panel length		17
noun panel us				-18											-21							26
noun paper				21
noun pipe	-41
noun pitch		-16
noun plate	-48			-21										17
noun plate length		68
noun plate us				-20										32
noun post	-15	35									28
noun post length		33
noun post us											30
noun pressure	25								-20						50	41
noun pull	-50	67		-28																		19
noun pull us															-16							22
noun ring		29
noun rise	34	52				26			36
noun rise length		52
noun riser	50	59		28		63
noun riser length		59
noun rod		62
noun rod length		47
noun room		-33
noun screw				45
noun screw us				53
noun screwdriver		60
noun screwdriver length		60
noun seam		32
noun seam length		32
noun second coat	-29
noun sheet	-28
noun shelf		21
noun shelf length		21
noun side	-16	31		26
noun side length		31
noun side none				54
noun side us				-13					29		-23
noun sink length		-19
noun slab length		34
noun slider		29
noun slider length		29
noun spec																				34
noun static					51				-27									61
noun step		47
noun step length		47
noun stile		-43
noun stile length		-43
noun string	-35
noun stud		59
noun stud length		59
noun subfloor		9
noun supposed	-49			-21	32										-35
noun supposed us				-17	35										-35
noun temp	18									42
noun tile	-39	44		-33
noun tile length		69
noun tile us				-39
noun toilet	-22
noun track		37
noun track length		44
noun transformer		-57
noun tread	-26	70
noun tread length		70
noun tub		18
noun tub length		18
noun unit length		27
noun valve		-26
noun wall						33
noun wall metric						38		19
noun wall none				32
noun wall us												17
noun waste		-27
noun waste length		-46
noun water		25
noun water length		25
noun way		30
noun way length		41
noun wide		26
noun wide length		26
noun window	-27	36		-33
noun window length		36
noun wire		-15
nounsort #	-32
nounsort # angle		-40
nounsort # current		50
nounsort # flow		38
nounsort # other		32
nounsort # power		31
nounsort # slope		25
nounsort # torque		29
nounsort tarea	-37	38
nounsort tarea <12				-20	37
nounsort tarea length		40
nounsort tarea none one									32
nounsort tarea's	-29	24
nounsort tarea's length		20
nounsort tarea's none one									36	-10
nounsort tarea's us one													55
nounsort tfixture		30
nounsort tfixture <3000						29
nounsort tfixture <32				-46					38
nounsort tfixture <40									-22	29
nounsort tfixture <5						52
nounsort tfixture <600						46
nounsort tfixture <8				60
nounsort tfixture length		32
nounsort tfixture metric one						52
nounsort tfixture none one						60			46	29
nounsort tfixture us pair2				42
nounsort tfixture's	13
nounsort tfixture's length		-10
nounsort tfixtureVworkb		-8
nounsort tfixtureVworkb length		-8
nounsort tmaterial	-29
nounsort tmaterial <100				48		74
nounsort tmaterial <1000						24
nounsort tmaterial <12				21								23							29
nounsort tmaterial <16						11
nounsort tmaterial <20				49
nounsort tmaterial <40				63
nounsort tmaterial <50				33
nounsort tmaterial metric one						43
nounsort tmaterial metric pair2				-26
nounsort tmaterial none one						30
nounsort tmaterial other		-19
nounsort tmaterial us one				34
nounsort tmaterial us pair2					-18	-23
nounsort tmaterial's		22
nounsort tmaterial's none one				31		28
nounsort tmaterial's us one				38
nounsort tmaterialVworkb	-25
nounsort tmaterialVworkb <5				24
nounsort tmaterialVworkb length		30
nounsort tmaterialVworkb none one				50								26
nounsort tmaterialVworkb us one				-12
nounsort tmaterialVworki		32
nounsort tmaterialVworki length		47
nounsort tmaterialVworks	-24	-39
nounsort tmaterialVworks length		-47
nounsort tpart <100									-27		28				30
nounsort tpart <12					-21									34
nounsort tpart <26												-18		18
nounsort tpart <32				31		-28
nounsort tpart <40				50
nounsort tpart <5																26
nounsort tpart <50				51						41												30
nounsort tpart <72				56		-17			54	39										-19
nounsort tpart current		-44
nounsort tpart flow		44
nounsort tpart metric one						-21				35						23
nounsort tpart none one				32		-19			28												13
nounsort tpart other		-37
nounsort tpart percent		34
nounsort tpart temperature		40
nounsort tpart us one				25
nounsort tpart us pair2				-28
nounsort tpart volume		-44
nounsort tpart's	40	-13
nounsort tpart's length		-20
nounsort tpart's none one													47
nounsort tpart's us one				63					19						29							-18
nounsort tpartVotherb		27
nounsort tpartVotherb length		27
nounsort tpartVworkb	13
nounsort tpartVworkb <5				30																	33
nounsort tpartVworkb none one				55																	44
nounsort tpartVworkb us one				42																	29
nounsort tpartVworks	-51	35
nounsort trole	-37	-10
nounsort tsurface <1000						66
nounsort tsurface <12					20		24		28	-17
nounsort tsurface <130									32				21		-23
nounsort tsurface <16				26
nounsort tsurface <2				-12	37
nounsort tsurface <20									37			37
nounsort tsurface <26				53					19
nounsort tsurface <3				-21		-36		55
nounsort tsurface <600						47
nounsort tsurface <8				83											-30	47
nounsort tsurface length		32
nounsort tsurface metric one									-24	27
nounsort tsurface metric pair2						18
nounsort tsurface none one				42		32		27
nounsort tsurface none pair2						35
nounsort tsurface percent		30
nounsort tsurface pressure		32
nounsort tsurface temperature		-16
nounsort tsurface us pair2				21
nounsort tsurface's	29
nounsort tsurface's <16				32
nounsort tsurface's angle		18
nounsort tsurface's none one				25							25		-21	38	31
nounsort tsurface's us one				36	-21						41	24			23
nounsort tsurfaceVotherb		48
nounsort tsurfaceVotherb length		48
nounsort tsurfaceVworkb none one				54
nounsort tsurfaceVworkb us one														25
nounsort tsurfaceVworki		52
nounsort tsurfaceVworki length		39
nounsort tsurfaceVworks	-36	51
nounsort tsurfaceVworks length		55
nounsort tsurfaceVworks us one															32							-32
nounsort ttool	-59	-19
nounsort ttool us one				-21						36												-25
nounsort ttoolVworkb	-16
nounsort ttoolVworkb us one																						24
nounsort twork	-96
nounsort w	-24
nounsort w <0.1																	35	28
nounsort w <100						-16
nounsort w <1000						30
nounsort w <12										22
nounsort w <130									31
nounsort w <16																			30
nounsort w <20				35					-20	-15	-20
nounsort w <200						37					45				-22							23
nounsort w <26				-26									51
nounsort w <260						44							-32
nounsort w <32														29
nounsort w <400						34														37
nounsort w <50									44					27								34
nounsort w <60						-11			-22	35					-19				45
nounsort w <600						-7																-31
nounsort w <72									26					29
nounsort w <8				-20	21
nounsort w <85									-24			61
nounsort w angle		-36
nounsort w area		37
nounsort w both one														43
nounsort w current		-50
nounsort w metric one						34
nounsort w none pair2				-43		-13
nounsort w none range1																			26
nounsort w other		-38
nounsort w power		60
nounsort w temperature		-8
nounsort w voltage		-24
nounsort w volume		-42
nounsort w's <12									25			-25
nounsort w's none one						32								-27						32
nounsort w's us one					26	-19			38		16
nounsort wed	-46
nounsort wed length		28
nounsort wed us one				-16	32										-31
nounsort wing none one										27
nounsort wly		49
nounsort wly length		54
open  angle		8
open  area		25
open  current		-18
open  percent		35
open  power		-24
open  volume		-16
open  weight		-24
open -	-68	39
open - length		34
open - temperature		39
open also	-28
open and area		-20
open and volume		-47
open and weight		33
open but		26
open cause	-9
open cause length		52
open like		59
open like length		58
open now	46	38
open okay	-27
open or	-47	-33
open or length		-25
open so	-36
open then	-22
open then length		24
own aff		25
own aff length		25
own anybody		53
own anything		-46										18
own anything length		-46
own apart length		34
own arrived						32
own asked																				24
own attic		21							34
own attic length		56
own b	-49	65
own back door		12
own back door length		12
own backed	-19
own backset		37
own backset length		37
own bad				39
own bag	-20
own baluster		37				52
own baluster length		37
own bar		-25													-24	70
own bar length		-25
own bar metric																62
own bar us															-27	34
own bare		35
own base		54
own base length		54
own basement length		46
own basin						30				47
own basin metric										50
own bath		44						19
own bath length		36
own bathroom	-28	9														27
own batt	-30
own bay	-30	22		-17
own bay length		22
own bay us				-20
own bays				24
own bays us				30
own beam		32		32				24
own beam length		32
own bed	-30
own bedroom		54										29
own bedroom length		55
own bedroom us												31
own belly		-32
own bent	-19
own better	-60
own big	-58			-18
own bit						29
own bit length		16
own bit metric						32
own black		45							26
own black length		45
own black us									35
own blade				29
own blind	-36
own block	-28	-16
own block length		-24
own block us				-20
own blowing	16			-22					94
own blue									-19	36
own board	-44	-24
own board <8						-19
own board length		-30
own board metric						-25
own bolt	-27	-32
own bolt length		-32
own bolt none									31
own bolted						23
own book		51		28
own book length		51
own book us				29
own boot	-25			-16
own bottom		24				21
own bottom length		23
own bottom none						42
own bottom us				23									25
own bout		28
own bout length		28
own bowed		35
own bowed length		35
own bowl	-22														24
own bows		24
own bows length		24
own box	-40
own box <2				-12
own box <8															-20							-38
own box none									-21										27
own boxe		-16		29
own boxe length		-16
own bracket	-45	17				23
own bracket length		15
own brass	-48					-42
own breaker	-55
own brick		47
own brick length		47
own bring	-25													29
own bring us														33
own broke	-35
own broken	-29
own built				29
own built us				32
own buried		42
own buried length		42
own burner	-31			16
own c	-31	62				-24			-20	42
own c length		65
own cabinet	-20								36
own cable		99		27
own cable length		69
own call us														22
own camera		-45
own cap		-27							-23		-21										69
own cap us																					32
own carpet	-17
own casing											25
own casing length		-15
own casing us											26
own cast		-11
own cast length		-11
own ceiling	-17			29
own ceiling <3				19				31
own ceiling none								31
own ceiling us				31
own center	37			85
own center us				45
own centre						47
own chain	-15
own chair		-69
own chair length		-21
own change	-32
own check	-16			24		-20									38							-32
own checked													37
own chimney		24
own chip		33
own chip length		33
own chipped	-30
own chunk		33
own chunk length		33
own circuit		-11											16
own circuit us													22
own ckts	-72			-14
own clamp	-22	-22				-14
own clamp length		-23
own clean		-36																				9
own clean us																						11
own clear						41
own clear length		29
own clearance		43
own clearance length		43
own clip				23
own close	-45
own closet	29	26			27
own closet length		25
own closet none				26
own closet us					37
own coat	-35
own code																				36
own code us																				38
own coil		28
own cold	-19	16								-19
own cold pressure		25
own column		28
own coming	-26	-18							36				28		47
own coming us					-26										55
own cooktop		34
own copper		-54
own copper length		-54
own cord		-104
own cord length		-104
own corner	-28	32
own corner <5												31
own corner none						29					30
own count	-67
own counter length		52
own cover	-38	-26		-27
own cover length		-42
own cover us				-29
own crack	-21	49
own crack length		49
own cracked	-20	36
own cracked length		32
own cracked none						21
own crooked											30
own curb		40
own curb length		40
own cut	33	22				25					32
own cut <2				-17
own cut <5				-9				24			18
own cut <50				-9
own cut length		29
own cut metric				-15		22	46										36
own cut none						84			-20
own cut out	-45	28				-22											20
own cut out length		28
own cut us				33							49
own cutout		41
own cutout length		41
own dated	-47					-19
own day	-29
own daylight		71
own daylight length		71
own dead	-32														24
own dead length		35
own dead none															41
own deck		-26				27
own deck length		-16
own deep	31			23	24	26
own deep <12						-16	27
own deep <26				46
own deep <8				-43	59
own deep metric				-22		53		33
own deep none				44
own deep us				27	40
own dentist		-31
own dentist length		-31
own depth		81
own depth length		81
own dia		8
own dia length		8
own different				33
own different us				33
own dimmer		64
own dining room		28
own dining room length		20
own dishwasher		30
own dog	-23				-13
own door	-25	29
own door <16													27
own door <5												25
own door <8				40
own door length		32
own door none						20
own double	-23
own drags on		38
own drags on length		38
own drain		24		37
own drain length		28
own drain us				43
own drawer	-29	53
own drawer front	-26
own drawer length		53
own drawing	20	60		20										45
own drill		-7
own drill length		-7
own drilled		52
own drilled length		52
own drip	-36
own drop	-38	-10											19
own drop length		-23
own drop none				32									31
own drop us				-18
own dropped		69
own dropped length		69
own dry	-26	34										22
own dry none												25
own dryer		-59
own drywall	44	52		36
own drywall length		38
own east		45
own east length		37
own edge				29
own edge length		50
own edge none				30
own elbow		-41
own elbow length		-41
own electrician	-45	62
own electrician length		62
own end	-26	38
own ends		33
own ends length		33
own enough	-11									25
own enough us					-12
own except				21
own except none				20					-18
own extra	-17
own face	-19
own fall length		-16
own fan	-34	76										-27										28
own fan flow		43
own fan us												-35										32
own faucet		32
own faucet length		31
own feet		-19
own feet length		-19
own fella		-37
own fence				41
own fence none				44
own filler		21
own filler length		21
own filter									32						22
own finish																26
own finish us															-23	30
own fire									-21	37	-31
own first	-39	13
own first <3															-21
own first length		16
own fixed	-15
own flange		33
own flange length		33
own flat	-14	35		28
own flat length		24
own flat us				31
own floor	-21	24		33
own floor <60				67
own floor length		20
own floor none				61
own flow		-10								49
own flue		46
own flush	-32			-25
own foam		-50
own foot		-49
own foot length		-56
own footing	19			47
own footing us				47
own form		24
own form length		24
own found	29
own frame	-22
own framed		43
own framed length		43
own framing		34
own fridge				28		21			-38
own fridge us				34					-20						32
own front	-42			-16				29
own front <3								52
own front length		49
own front none				-20				42
own front room	-35					-15
own full	-21	33
own full length		24
own gap	27	61		56		48
own gap length		61
own gaps		78
own gaps length		78
own garage	29	24		30								27
own garage us												32
own gas length		-16
own gauge		32
own gave		-29
own gave length		-45
own get	-17	-26		-22		-16					32
own get metric						-27
own get none						-14			41
own get us				-41							43		20
own give		-54				37
own glass	31	-37											37
own glass length		-41
own glass us													41
own glue	-23	-51		19
own glue length		-54
own glue none				40
own glued		-26
own glued length		-34
own go		31
own go length		45
own go metric						44
own go us				42
own goes	-20	-22		16
own goes length		-12
own goes us				24
own going	80	55				62			28				54
own going length		48
own going none						76
own going us									40				53									-26
own gone						17
own grab	-25
own grain	-55
own gray		-21		16
own gray us				18
own ground		31
own gutter		60
own gutter length		60
own guy	-22
own guy length		-19
own h	-42								51
own hair		41
own half	-61	-48		-27
own half length		-35
own hall	-38	47
own hall <5									28
own hall length		43
own hallway	-42					-33		21							-24							21
own hand	-21	-44
own hand length		-44
own handle		35
own handle length		35
own handrail		63				35
own handrail length		63
own handrail none						56
own handrail us				30
own hang													28
own hang none													39
own hanging	-22	34		32
own hanging us				33
own hatch	45			60
own head												25
own head none												39
own head us															34							-35
own header		28
own header length		28
own hearth		61
own hearth length		59
own heat	-30								31
own heater		-9
own height				56
own height us				20
own held	-16	28												39	34							-42
own held length		17
own held us															40							-47
own high	31	49				61		23
own high length		36
own high metric						40
own higher		44
own higher length		44
own hinge	-18
own hinge us				31
own hits	-26	14		-21
own hits length		14
own hold	-24			-30											23
own hold length		-12
own hold us				-31											25
own holding	10	32							85	-11					54
own holding us															68
own hole		43		35
own hole <3						-21
own hole length		43
own hole metric				-24		34
own hole none				25		30
own hole us				49
own hollow	21					34
own hood		26
own hood length		36
own hooked		-49
own hose		-37
own hose bib		36
own hose length		-26
own hot	20	26											29
own house		30			33
own house none															20
own house us					45															28
own humidity		-9
own humidity percent		35
own hump in		20
own hump in length		20
own hung	-32			20
own inch		-55
own inch length		-55
own inside corner									-57		70
own inspection	-60			-14
own inspector	44	52		61
own inspector length		52
own inspector us				39
own instead		53		26
own instead length		35
own instead us				34
own insulation		-62
own insulation length		-31
own island		52		36
own island length		50
own itself	22			19		34
own job	-53	-42				-12
own job length		-28
own joint	-47	35		-33
own joint length		35
own joint us				-37
own joist		32
own joist length		29
own keep		20				22
own kit	-63
own kitchen	-57
own kitchen length		-18
own kitchen none									32
own know		-37
own know length		-37
own ladder		18
own ladder length		18
own laid		-42
own land		26
own land length		26
own landed	-28
own landing		28
own landing length		28
own last	-46
own latch		32
own latch length		32
own laundry	-22	-21											30
own laundry length		-26
own laundry us													30
own layer	-21
own lean		62
own lean length		61
own leaning		20
own leaning length		20
own least				24
own leave	-39
own ledger		-50
own ledger length		-50
own left		31				33
own left <3				29
own left end		19
own left end length		19
own left length		33
own left none						53
own left us				35
own left wall		-18
own left wall length		-18
own leg	27										26		49
own leg none													36
own less		28
own level		35		33
own level length		35
own lid	-28	23
own lid length		23
own lift		71		29
own lifted	-26					-13										43
own light	-32
own light none				26
own line		26													25							-19
own line none				18		21
own line us				-16											41							-30
own link	-24
own lip		51
own lip length		51
own lippage		28
own lippage length		28
own list	-40
own lite															-22							26
own lite us															-22							26
own little		-96													37
own living room length		45
own load		32										-38	34	25
own lock		39		-13									63									-24
own lock length		39
own long				29				19
own long <3						-29		50
own long metric						-19		23
own long none				-14		30		38
own long us				46
own loop		41
own loose	-30	37
own loose length		37
own lot				-20		58
own low	37	47		59					-21			36
own low length		46
own low spot		33
own low spot length		33
own lower		57
own lower length		55
own machine	-19			-15												47
own made		-44
own made length		-44
own make		-45							28
own make length		-45
own manifold		20
own mantel		21
own mantel length		21
own mark	-27			36
own marked		-28
own marked length		29
own master bath		-26
own mat		12
own max				-28		19			-16					56
own me		-30												20
own mean						19
own measure		45
own measure length		43
own measured	28	28				24														55
own measured us																				66
own mesh									31
own mesh us									31
own meter	14					-22						72	31				25
own meter none											-22
own meter percent		34
own meter us									-28				46
own metre		-146
own metre length		-146
own mid		36
own mid length		36
own middle		58		46					-15
own middle length		58
own mill	28					60
own mill none						63
own min		45
own minu	-77								-23			-21
own mirror		60		34
own mirror length		60
own mirror us				34
own missing	-41	39
own missing length		39
own miter		35
own miter length		35
own moisture		23																				30
own more		-27
own more <2				29
own more <3				-15
own more length		-17
own more none				20
own move	-37	38
own move length		31
own move us				30
own moved	-13	25		-16		39
own moved length		25
own mud		16
own mud length		16
own n													33
own nail	-25
own nailed	21			40
own nailed none				49
own need	-29	-26
own need <12				-18
own need <16											-20
own need <2				19
own need <3				-12
own need length		-25
own needed	-19	-41
own neighbor									33
own new	-25	-25				22
own new <5				-8
own new metric						60
own new us				-17
own newel		15
own newel length		15
own niche	19			22			22
own north		35
own north length		35
own nos	-26
own nosing		-16
own nosing length		-16
own number	-24
own oak	-62					-16
own oak length		-35
own oc		21
own oc length		21
own office		-34
own office length		-34
own oil	-13
own old	-20	-33
own one	14													39
own one length		41
own one us														45
own open		-18		48											26
own open length		-27
own open none				50		-14			-12						57
own opened	-9	65		32		-14
own opened up		55
own opened up length		55
own opening	-33
own order	-46	-23
own other		34
own other <5				-19
own other length		28
own other none													21
own out of plumb		40
own out of plumb length		35
own out of square		-8
own out of square length		-8
own oven	37					-18			60				38
own overhang		59		39
own overhang length		59
own owner	-70					-35
own pack	-47
own pad		46
own paint	-28	-29		-19
own paint length		-23
own paint us				-27
own pan		24
own pan length		24
own pane	-14
own panel	-28
own panel metric						-36
own panel none									29
own pantry	-23	37
own pantry length		35
own paper	-21
own part	-52			-40
own patch	66	17		62								35
own patch length		17
own patch us				77
own piece	-22
own piece <3				-19
own pipe	-21	-22							27
own pipe length		-40
own pitch length		-8
own pitched length		37
own plan		23		30
own plan length		23
own planed		61
own planed length		61
own plank length		35
own plate	-35
own plate us				-15										24
own plug	-18	-35
own plumb	-38	-17				-31		20
own plumb length		-17
own ply		-19
own ply length		-19
own plywood		18
own point	-17
own post	-24	33
own post length		32
own poured						39
own pressure	42	33		-21		-26									66	29	37
own pressure us				-24											64	24
own primed	-28
own primer		-70
own proud of		31
own proud of length		31
own pull	-21	63													-24							26
own pull length		52
own pull us															-28							30
own pulled		50
own pulled length		55
own pulling		24							61					48
own punky		37
own punky length		37
own put		-29													36
own put <5				-19
own put length		-32
own put us				23											63
own putting										23			51
own radiator		38
own radiator length		38
own rafter	-41					-25
own rail		38		32
own rail length		28
own rail us				38
own rain	-38	-25
own raised		38
own raised length		39
own ran	-21	-15		-27					29
own range		-10											29	25
own range length		-10
own range us													35	31
own rated																					21
own read				-23									34								25
own read <130													49
own read <5									-45	-27	49
own read none				-17						26				-19							40
own read percent		32
own read us				-31						-32		52	48
own reading		42		-21							-23		29		39						25
own reading none				-17						-15			37		25						32
own reading percent		23
own reading us															34							-30
own real									35
own red																			35
own replaced		-76
own reset	-63					-24			-23	-17	36
own rest		-42
own rest length		-40
own return		41								55
own return us									39
own reveal		59
own reveal length		59
own rh		27
own rh percent		27
own ring		47
own ring length		46
own rip		50
own rip length		50
own ripped		25
own ripped length		25
own rise	39					50			28
own rise none						45
own riser	14	50				45
own riser length		50
own rm		59
own ro		50
own ro length		50
own rock													27
own rock us													29
own rod	16	28		71
own roll	24	-20											41
own roll length		-21
own roof	-35	35		-18
own roof us				-18
own room		-8										-18
own room length		-33
own rotted	-16								34
own rotted us									36
own rough		68
own rough length		68
own rough opening		24
own rough opening length		24
own roughed				37
own round						26
own round none						39
own row		29
own row length		29
own rubber length		-11
own run		40			15									26
own run <12				48										50
own run <5					-28																36
own run length		37
own run us				26	23
own running	-38										-28
own running length		-32
own running us									37	-19	-24
own runs	-21	57							28
own runs length		62
own s	-23
own sagging		14
own sagging length		14
own sags		29
own sags length		28
own said		-12		-37					-31	37		49
own said us				-28					-34	42					30
own salon															-16							23
own same	-20
own sand	-37
own sanded	-95					-15
own sanding	-31
own say		37		18								24
own say length		12
own say none				29							-20	36
own says		35
own says <16				-13															32
own says <32				42
own says <40									40
own says <60									33
own says metric												21
own says none									21										22
own says us				19
own screen		12										20
own screen length		26
own screw	-17	-13
own screw length		-13
own screwed		-38
own scribed		-23
own scribed length		-23
own seal		29
own seal length		29
own seam		42		27
own seam length		42
own second coat	-29
own second length		15
own see		34											17
own see length		35
own see us													25
own sent		-15		39
own sent length		-15
own sheathing		38
own sheet	-34
own shelf		23		30		25
own shelf length		23
own shelf us				40
own shelve		54
own shelve length		54
own shift		49
own shift length		49
own shim		-16
own shim length		-16
own shop	-29			-15					30
own short	-40				24	-20
own short <2					50
own short <3								-11
own short length		48
own short us					31
own show		-15		42
own show length		-19
own shower		-44
own shy		45
own shy length		45
own side		35			19
own side <5				28
own side length		32
own side none				34
own side us					29
own sill		22		27
own sill length		22
own sit	-20	31
own sit length		31
own sitting		23													33							-32
own sitting length		44
own sitting us															33							-32
own skirting		41
own skirting length		41
own slab		19											23
own slab length		35
own slab us													29
own slat	-28
own sliver		34
own sliver length		34
own slope		35
own slope length		26
own snaked		70
own snaked length		70
own snapped	-27
own socket		31
own soffit		-24
own soffit length		-24
own spec																				34
own spin	-26
own split	-50	77							51	-16	-36
own split length		53
own spot	-17	36
own spot length		36
own sprayed	-32
own stain	-21
own stair						21
own stair none						34
own standing		-19
own start		-78
own stat									-45	94	48
own static		27			51				-27									61
own static pressure		24
own station	16			32
own station us				32
own stay	-41	40
own stay length		40
own step		62
own step length		86
own step none						35
own step us				38									28
own stick		-9
own stile		-18
own stile length		-18
own stone		38		47
own stone length		38
own stone none				52
own stop	-29	-26
own stop length		-39
own straight	-52			-39
own straight us				-39
own street		72
own string	-35
own stringer	-14
own strip				55
own strip us				67
own stripped	-20
own stuck	-18	15
own stud				39
own stud us				40
own subfloor	15			32
own supply									28	21
own supposed	-55	-18		-26	29										-32
own supposed length		-24
own supposed us				-19	34										-34
own swapped	-22	-68
own switch	-12
own tail length		52
own take	-31			-19
own take us				-29									33
own tall	28				57
own tall us					57
own tank	48	25							49								39
own tap	-24	-45		-24		36			58				-17
own tap length		-72
own tap us						34			57
own tape	-29			-21
own tape length		39
own taped	-15
own tell		-64
own tell length		-64
own temp									26	33
own temp us									58
own tenant		-17
own test		50
own tested	44												29			18				29	27	-27
own tested us													35		33					34	32	-30
own the lady				21													31
own the wrong	-35
own the yard	-27			-16
own thermometer	47								55	35
own thermostat				-20					69
own thick	22					53
own thick length		41
own thing		17
own third						34
own throw		67
own throw length		67
own tile	-51			-27
own tile none				-38
own tile us				-24
own time	-26	-40																	23
own time length		-42
own time metric										25
own time none																			35
own toilet	-40	36
own toilet length		48
own told		11		27
own told us				36
own too deep		26
own too deep length		26
own too high length		35
own too long		-17
own too long length		-17
own too low		27
own too low length		27
own too wide		36
own too wide length		36
own took	-31
own took <5				35
own took length		18
own took metric						-20
own took none				33					24
own took us				-19
own top		21		46						25
own top length		19
own top none									-23	47
own top us				73
own total	43	42		27		26
own total length		42
own total us				37
own track		30											30
own track length		36
own track us													31
own transformer		-39
own trap				14
own trap us				16
own tray		18				21
own tread	-40	32
own tread <16				-22
own tread length		32
own treated						26
own trench		92
own trench length		93
own trim	-30
own trimmed		34
own trimmed length		34
own truck	-24	-87															35
own tub	-20	30		27
own tub length		37
own tube		-40
own tube length		-40
own turn		-45							24		33
own turn length		-45
own turn none									31		41
own turned	-33								-21		38
own turned us				-15					-16		27
own twos	-42
own undercut		36
own undercut length		36
own unit	-41	14
own unit length		32
own unit us				25
own upstair		15		22
own upstair us				33
own us length		19
own used	-32	-59
own used length		-42
own used us				-14
own valve	25			38		19
own valve us				50		17
own van	-24	-58
own van length		-58
own vinyl		-23							36
own vs	-40	78							-24
own walk	-47			-22
own wall		30				21
own wall <16				21
own wall <3						-32		9
own wall <8				24
own wall length		30
own wall metric						70		10		25
own wall none										20
own wall percent		23
own want		21
own want <1000						33
own want <16				31											24
own want <2				-24
own want <20													26
own want <26				35								-18
own want <3				-16
own want <40									47
own want <5																14
own want <60				-12
own want <85				70																12
own want length		31
own want metric						32
own want none				29
own wanted	-24	28				-18
own wanted length		28
own wanted us				29
own wash		-40
own wash length		-35
own washer				34					-18
own waste		-23				43					45
own waste length		-38
own water		49		-13					63
own water length		56
own water us				-13					66
own way				32
own way us				35
own weigh		35
own went length		31
own went us																				25
own wet	-27	46
own wet length		47
own white	-29	-38
own white length		-38
own wide		30		21		28
own wide <40				39
own wide length		30
own wide metric						18
own wide none				28		47
own wind	-47
own window	-26	26		-15
own window length		35
own window metric						14
own window us				-23
own wire	-37	-18
own wire length		-28
own wood	41	38		34								27
own wood length		37
own wrong	-19
own x metric							25
own x none						38
prev air		41							29
prev anything		41		60
prev anything length		39
prev apart				16
prev apart on				16
prev ask									-20	-20	33
prev attic	-14	24		-36						39											22
prev attic length		24
prev attic on				-38						41											24
prev bad					-22				74
prev bad on					-22				74
prev bag		-21
prev bag length		-21
prev baluster		29		36		18
prev baluster length		29
prev baluster on				36		18
prev bar	-25	23				10
prev base on						12
prev basement		41		37								23
prev basement length		64
prev basement on				39								24
prev bath	-41	-18							-21						21
prev bath length		-39
prev bath on														27	25							-25
prev bathroom	-54
prev bay	-28
prev beam		26
prev beam length		26
prev bed	-30					46
prev bed on					-26	17
prev bedroom		-37			36
prev bedroom length		-40
prev bedroom on					36
prev bent		47
prev bent length		47
prev big	-20	59
prev big length		59
prev bit										27
prev bit on										29
prev black	24	-29
prev black length		-32
prev blind		-48
prev blind length		-48
prev block		-36
prev block length		-21
prev board	-40					-22
prev board on						-23
prev boiler	56
prev bolted		-23
prev bolted length		-23
prev bottom	-19	27
prev bottom length		18
prev box		31		-10	32														26
prev box length		41
prev box on				-10	32														26
prev bracket											40
prev bracket on											43
prev breaker	59													69
prev breaker on									19					49
prev bring	-39	48		-18		-16			-18	41
prev bring length		48
prev bring on				-13
prev broken		34
prev built		25		56
prev built length		25
prev buy		-17
prev buy length		-33
prev c	11				41
prev c on					44
prev cabinet		-35
prev cabinet length		-36
prev call		-56																	32
prev call length		-56
prev call on																			34
prev cap		-40															36				22
prev cap length		-21
prev cap on																	36				22
prev carpet		46
prev carpet length		40
prev casing		-7
prev casing length		-7
prev catch		30
prev catch length		30
prev ceiling	-33	30
prev center	52	25		24	46
prev center length		25
prev center on				26	48
prev centre		10
prev centre length		10
prev change		-57							29
prev check	9	68															41
prev check length		68
prev check on																	41
prev checked	8	34		-33		71
prev chimney		53
prev chimney length		55
prev clamp		19
prev clean		58		41											-30
prev clean on				44
prev cleaned															25
prev cleaned on															27
prev clear				21
prev clear on				26
prev cleat				24
prev cleat on				24
prev clip		31
prev clip length		27
prev closer		-28
prev closer length		-28
prev closet length		33
prev coat				47
prev cold															18
prev cold on															18
prev coming		28
prev coming length		25
prev concrete		43
prev concrete length		32
prev cord		-50
prev corner		42		28
prev corner length		39
prev corner on				36
prev corridor	-34
prev count	-62
prev counted	-39
prev counter		21
prev counter length		20
prev cover		53
prev cover length		37
prev crack		40
prev crack length		40
prev crown		27
prev crown length		32
prev curb		24
prev curb length		24
prev cut	15	25		30
prev cut length		23
prev cut on				32		25
prev cutout		38
prev cutout length		38
prev cuts		21
prev cuts length		17
prev day		-31
prev dead	18			33
prev dead length		44
prev dead on				19
prev deck		61
prev deck length		61
prev deck on				41
prev deep				26
prev deep on				27
prev delivered	-25
prev den		32
prev den length		31
prev desk	-59			-14		-26
prev desk on				-14		-26
prev dining room	16	48		-13							53
prev dining room length		46
prev dining room on				-13							54
prev dishwasher		20
prev dishwasher length		20
prev dog		36
prev dog length		31
prev door	-27	32				18
prev door on						18
prev drain		-49										35
prev drain length		-51
prev drain on												36
prev drawing		-8
prev drawing length		-8
prev drilled		18
prev drip		27
prev drip length		24
prev drop	-31			-16																36
prev drop on				-17																41
prev dry		37										26
prev dry on												16
prev dry percent		54
prev dryer	20												45
prev dryer on													45
prev drywall	-11	18
prev duct	21	34		39																41
prev duct length		27
prev duct on				39																41
prev dug	22			40														33
prev dug on				40														33
prev edge		-43		-18								39
prev edge length		-17
prev edge on				-20					-18		-20	42
prev electrician length		18
prev end	-37	72
prev end length		74
prev enough		45											25
prev entry		-35
prev except		27
prev except length		48
prev face		-29
prev face length		-35
prev fan	41	-48			39									20						17
prev fan length		-20
prev fan on					40									21						18
prev fascia		56
prev fascia length		56
prev fence				26
prev fence on				28
prev fill		-23
prev filled length		34
prev finish	-44	-20
prev finish area		27
prev finish length		-40
prev first	-26	-37
prev first length		-37
prev fixed		16
prev fixed length		19
prev flashing		52
prev flashing length		53
prev flat	-53	15		-26
prev flat length		30
prev flat on				-26
prev float		31
prev float length		31
prev floor	-29			27
prev floor area		31
prev floor length		-21
prev floor new						-29			-22					28
prev floor on				31
prev flush		-32
prev flush length		-32
prev foam		62
prev foam length		55
prev found	18			36
prev found on				36
prev foundation		28
prev frame		59
prev frame length		57
prev framing		-28
prev framing length		-32
prev fridge	56				68										20
prev fridge on					68										20
prev front					15
prev front door		41
prev front door length		41
prev front on					16			15
prev front room		28
prev front room length		28
prev gap		34
prev gap length		34
prev gap on						23
prev garage		-20		24
prev garage on				23
prev gasket length		-25
prev gate		53
prev gate length		49
prev get															39
prev get on															43
prev glass		48		27		22
prev glass length		48
prev glass on				27		22
prev glue	-33	-58
prev glue length		-49
prev glued	-22
prev go new						21
prev goes	-31			-10
prev goes on				-10
prev going	-52	39		22		-33		22	-19						-21
prev going length		52
prev going on				23		-22		23	-15						-22
prev gone	-29
prev gone on									-20		-19
prev guard		-31
prev guard length		-31
prev guy		40
prev guy length		71
prev gym		60
prev half		40
prev half length		40
prev hall	-29								-23		-19
prev hall bath length		50
prev hall on						23			-24		-20
prev hallway	-24	30				-43						36
prev hallway length		26
prev hallway on						-43						36
prev hand	-22	-45								26
prev hand length		-67
prev hand on										26
prev handle	-54	41		-28		-24
prev handle length		27
prev handle on				-28		-24
prev handrail		31							-15		32
prev hang		-41		25
prev hang length		-41
prev hang on				25
prev hanging		-48
prev hanging length		-48
prev head		-23
prev head length		30
prev head on												28
prev hearth		57
prev hearth length		57
prev heat									42										36
prev height		58
prev height length		58
prev held									24									18
prev high		27				41
prev high length		27
prev high on						42
prev hinge	-38								-33	-25
prev hinge length		27
prev hinge on				-17					-39	-29
prev hit	22			48
prev hit on				50
prev hits		58
prev hits length		58
prev hold		63							41
prev hold length		65
prev hole		63		29
prev hole length		61
prev hole on				32
prev hollow	-23
prev hook	31			27											44
prev hook on				27											44
prev hose		-14
prev hose length		-21
prev hot		-53							45
prev hot on									45
prev house	-31
prev house length		48
prev house on																						-34
prev hump		25
prev hump length		25
prev hung	22	25		54											28
prev hung on				54											28
prev inspector				40
prev inspector on				40
prev instead		-18
prev instead length		-18
prev insulation	21	48							34
prev insulation on									34
prev island		39
prev island length		40
prev job	-21	61
prev joist												35
prev joist on												36
prev kick	60	27
prev kids	-32				-27
prev kitchen						17
prev kitchen on						19
prev know	25	43		21		36
prev know length		44
prev last	-17	24
prev last length		22
prev latch		31
prev latch length		31
prev laundry	44					51
prev leak		27
prev leave												14	27
prev leave on												15	29
prev left	-24				18					24
prev left new				-12					-22	47	-28	21
prev left on					25
prev let go		42
prev let go length		38
prev level										27
prev lid	-61	17		-43
prev lid length		47
prev lid on				-43
prev lift		67
prev light	19	44											38	29
prev light length		46
prev light on													38	29
prev line	27				25				30
prev line on				-29	28				33
prev list		60
prev list length		56
prev little	-47	-60
prev little length		-60
prev living room	-51	36		-27								46			-23							19
prev living room length		31
prev living room on				-23								46			-23							19
prev load	-36	-26
prev loft		29
prev long									17
prev long on				30
prev long wall		41
prev long wall length		41
prev longer		-26
prev look	-43	-10		-11
prev look on				-12
prev loop	29								-30							37
prev loop on									-30							37
prev loose	-40	64
prev loose length		56
prev lot		36		-12					40
prev lot on				-13					43
prev low		69											36	37
prev low on													37	38
prev made		43		12			26
prev made length		43
prev make		46
prev make length		45
prev manifold	36			-15														76
prev marble		44
prev marble length		44
prev me	-22	-24
prev measure		26		20
prev measure length		32
prev measure on				20
prev measured	41	48		47	17	20
prev measured length		48
prev measured on				56	20
prev meter	-21								-15			35	38							-30
prev meter on									-16				40							-31
prev meter percent		28
prev middle		57
prev middle length		57
prev mirror	26			28
prev mirror on				28
prev missing	-44	35		-15
prev missing length		36
prev moisture	-34
prev more											26
prev more length		14
prev more new								32
prev more on						-22					35
prev morning		-19
prev move	-30	44			32															-38
prev move length		44
prev move on					32															-38
prev moved		11				33
prev moved on					-27	34
prev mrs	23					45															33
prev mudroom		35
prev nail	-23
prev need		-53
prev need length		-46
prev need new						23					20
prev need on				29					-17
prev needed		-23
prev new	-35	-7
prev new length		-10
prev new new									23				-14
prev new on													33
prev north		66
prev north side		43
prev not straight		22
prev not straight length		22
prev number	-50	68		-17
prev number length		58
prev number on				-17
prev oak	-70	70		-39							28	38
prev oak length		55
prev oak on				-39								38
prev old	-35	56										-18
prev old length		67
prev old on												-18
prev one										20
prev one on										21
prev open		36										31
prev open length		31
prev open on												31
prev order	-68	-85		-18
prev order length		-83
prev order on				-19
prev ordered	-46
prev other				36
prev outlet		16
prev oven						22
prev packed	33			-22		72									27
prev pads		-7
prev paint	-35	17
prev pan		43
prev pan length		43
prev pane		30
prev pane length		30
prev panel	-34	44		24
prev panel length		44
prev panel new				47
prev pantry	-41	39		-15
prev pantry length		39
prev pantry on				-11
prev paper	-34	47
prev paper length		45
prev pass	-52	32		-20
prev pass length		30
prev patch length		30
prev patio		45
prev patio length		45
prev pendant	67			82
prev pendant on				82
prev picture		35
prev piece				35
prev piece on				35
prev pinned		48
prev pinned length		48
prev pipe	16	62		24		47
prev pipe length		60
prev pipe on				23		50
prev place	-62			-24
prev place length		-10
prev place on				-24
prev plaster		55
prev plaster length		54
prev plate										27
prev plate on										27
prev plug		69											31
prev plug length		44
prev plug on													32
prev plugged	26								47								34
prev plugged on									47								34
prev plumber	34	22		34		24											34
prev plumber length		19
prev porch		46											30
prev porch length		45
prev porch on													33
prev post	-28										28
prev post on											30
prev powder room		36
prev pressure	43														25	15
prev pressure on															26	16
prev primed		57		-17								44
prev primed on				-18								45
prev pull		18
prev pulled		-19		-27					-16	-15	30			37				21
prev pulled length		-42
prev pulled on				-27					-16	-15	30			37				21
prev pulling									34
prev pulling on									34
prev punky		41
prev punky length		41
prev push		30
prev push length		30
prev put		-18		-16		24						33			24
prev put length		-51
prev put on				-16		24						34			25
prev racked		50
prev rail	-25	25
prev rail length		40
prev rail on				41
prev rain		-46
prev rain length		-48
prev ran	-28	-20													25
prev ran on															25
prev range		50
prev range length		26
prev read				-16					-17			24	27							22
prev read length		-48
prev read on				-16					-18			25	16							24
prev reading				-26					55			28
prev reading on				-26					55			28
prev red	-12								37						-23
prev red on									37						-23
prev reducer		-26
prev reducer length		-37
prev replaced				-16					36
prev replaced length		-7
prev reset		-10
prev reset length		-32
prev rest		30
prev return		50								30					-24							23
prev return length		48
prev reveal		-21
prev reveal length		-21
prev ring	9	-14
prev ripped		26
prev ripped length		26
prev rise		33		-22		20
prev rise length		33
prev rise on				-22		20
prev riser		37				18
prev riser length		49
prev riser on						18
prev rm	-54	21							34
prev rod		66
prev roll	-21	72
prev roll length		72
prev roof				30					27
prev roof on				36					28
prev room												31
prev room length		39
prev room on												31
prev rot		57
prev rot length		57
prev round	22	-27				49
prev round length		-27
prev row	-15
prev run									35												33
prev run length		31
prev run on									38												36	-26
prev running		-28
prev runs		65
prev runs length		38
prev said	-33	32			31							-30
prev said length		32
prev said on					32							-31
prev salon	-16	53
prev same		51
prev same length		51
prev sand	-61
prev sand on															24
prev say	36	-14											29
prev say on													29
prev says	-36	-22			34
prev says length		-31
prev says on					35
prev screen	10					35
prev screen on						38
prev screw	41			38		59
prev screw length		-30
prev screw on				44		61
prev screwed		-52
prev screwed length		-42
prev screwed on				47		-33
prev scribed		37
prev scribed length		37
prev sealed		41																		39
prev seam		68
prev seam length		70
prev seat		22
prev seat length		44
prev second	-29	-25		-21
prev second coat	40								23	48
prev second length		-25
prev second on				-22
prev see	-45	-8		-26
prev see length		-9
prev see on				-11
prev sent	32	24		26				25	30
prev sent length		24
prev sent on				26				25	30
prev shed		-17
prev shed length		-20
prev sheet		43
prev shelf	-30	37		24
prev shelf length		37
prev shelve	-54	31
prev shelve length		31
prev shimmed				29											15
prev shop	-60	-34
prev shop length		-54
prev short	-53					-13			-22
prev short on				23		-15
prev shot		-62
prev shower		51
prev shower glass		-12
prev shower glass length		-19
prev shower length		54
prev shut		-48
prev shy				29
prev side	10			34	15	13
prev side on				38	18	18
prev sink	-25	39
prev sink length		33
prev sink on															18
prev sit		52
prev sit length		52
prev sits		28		19
prev sits length		28
prev sits on				23
prev sitting		48										47
prev sitting length		47
prev sitting on												47
prev skirting		25
prev slab				23		21
prev slab on						28
prev slider		35
prev slider length		35
prev slope		-16				-25	24
prev slope length		-18
prev slope on						-13
prev small		24
prev small length		43
prev smoke	-45
prev soffit		50
prev soffit length		50
prev soft		32
prev soft length		32
prev sound						36
prev spare		19
prev spare length		35
prev splash		23
prev splash length		23
prev split		-26
prev split length		-30
prev spot	-64	37				-18
prev spot length		27
prev spot on						-18
prev sprayed	-27
prev square	-39	39		-36
prev square length		39
prev square on				-36
prev squeak		-35
prev stair						25
prev stair on						29
prev start		-18
prev start length		-23
prev started		28
prev steam		-23
prev steel				-8						24
prev step		37		-21		38
prev step length		37
prev step new						20
prev step on				-23		33
prev stick		-56
prev stick length		-59
prev stop		-43
prev stop length		-29
prev store		-35
prev store length		-35
prev stove		-40
prev stove length		-44
prev straight		-32
prev straight length		-53
prev strip		-29
prev strip length		-23
prev stud		40				46
prev stud length		38
prev stud on						46
prev stuff	-19			-14					35
prev stuff on				-14					35
prev subfloor	19			20
prev subfloor on				20
prev supply									19
prev supply on									19
prev supposed		42
prev supposed length		42
prev swap		-11
prev swap length		41
prev swapped	10			-14						28										22
prev swapped length		33
prev swapped on				-14						30										24
prev sweep		48
prev sweep length		48
prev swing		36
prev swing length		36
prev switch	-20												34
prev take	24	31		29
prev take on				30
prev tall	36			62
prev tall on				69
prev tap	-21	-20
prev tape				50						25
prev tape length		32
prev tape on										30
prev taped		42		29						32
prev taped length		55
prev taped on										35
prev tell	39	26		57						26
prev tell length		28
prev tell on				57						26
prev temp												23
prev temp on												25
prev template		36
prev template length		36
prev templated		30
prev templated length		30
prev tenant													34
prev test	-112	38		-23
prev test on				-23
prev tested	-77	80				-19			-27
prev the wrong		-37
prev the wrong length		-56
prev thermostat	25								79
prev thermostat on									79
prev thing	41	34										56		40
prev thing length		34
prev thing on												56		40
prev think	-31	-22
prev third		-47
prev third length		-52
prev throw						28			-19	39
prev throw on									-20	40
prev tile	-32
prev tile area		34
prev time length		24
prev toe kick		34
prev toe kick length		34
prev toilet		32
prev toilet length		29
prev told	-15	-22		-14					35
prev told length		-41
prev told on				-14					35
prev too short		-20
prev too short length		-20
prev took		24							35					34
prev took length		-12
prev took on									39					37								16
prev top		36				20
prev top length		36
prev top new				-12
prev top on						17
prev tore		43
prev tore length		43
prev total	-35			-18
prev total on				-18
prev touch		53
prev track		46
prev track length		46
prev trap		-16
prev trap length		-21
prev tray		26
prev tray length		26
prev tread	-34	46
prev tread length		42
prev trim	-54
prev trim length		57
prev trimmed		44
prev trimmed length		44
prev truck														44
prev truck on														44
prev tub	53	25		29	39
prev tub length		25
prev tub on				30	41
prev turned	16				18															27
prev turned on					19															28
prev twice	-30											-11		21
prev unit	-27	35							26
prev unit length		30
prev unit on									32
prev upper		71		40
prev upper length		50
prev upstair	76									63								30
prev upstair length		23
prev upstair on										63								30
prev us		33
prev us length		30
prev use		-54
prev use length		-54
prev used	-72			-27
prev used new				-41							31
prev valve	40	-31			46										18
prev valve length		-37
prev valve on					46										18
prev van		-42
prev van length		-44
prev vent	-26	47		-15																25
prev vent length		11
prev vent on				-15																26
prev vinyl		48
prev vinyl length		46
prev wait		29
prev wait length		29
prev walk				10
prev walk on				11
prev wall length		39
prev want				20		22				22
prev want on				21		23				23
prev washer	-18	8		29
prev washer on				33
prev water	-26	35														30
prev water on															-23	31
prev way	30	67							-14	66		-20
prev way length		51
prev way on									-14	66		-20
prev went	-46	17								21
prev went on										22
prev wet		37										19
prev wet on												21
prev white	-32	-10												26
prev white length		-10
prev white on														27
prev wide	19											21
prev wide on				17		24
prev window				58
prev window new				56
prev wire	-33	22
prev wire on				-23
prev wrap		20
prev wrap length		48
prev wrapped		-71
prev wrapped length		-67
prev wrong	-53			-16		-21
prev wrong length		31
prev wrong on				-13		-22
prev x	-63			-48															28
prev x length		48
prev x new																			38
prev x on				-59
prev2 afternoon						19
prev2 air									22
prev2 asked				-22						27										25
prev2 attic																					21
prev2 b				-24					26
prev2 bad				-12
prev2 bag				38
prev2 base				36	39
prev2 basement						29			32						-22							27
prev2 bath									-27
prev2 bathroom				36
prev2 bent				40
prev2 bit						45			29
prev2 blade				-17					46
prev2 bottom						17
prev2 box									-28				27
prev2 bracket							14
prev2 breaker													34
prev2 carpet				-10
prev2 ceiling				33									26							17
prev2 checked				46
prev2 clean																	35
prev2 closer															-23							27
prev2 closet															23
prev2 coat				-25
prev2 cold									30						28
prev2 corner									35				23
prev2 cut				-14								33
prev2 day				-17								25
prev2 dead				-34		-25			30
prev2 deep				30
prev2 door				-30
prev2 drain						-15									25
prev2 drawer				-28				34
prev2 drop				-10											-33
prev2 dry									40
prev2 dryer													43
prev2 duct												33								16
prev2 dug				47
prev2 edge											47
prev2 fall						-22
prev2 fan																			30
prev2 fence				74
prev2 fill					30
prev2 filter				-46
prev2 finish				24					-30	43	-27
prev2 first				-17						21			29
prev2 fixed														31
prev2 flat				-49		-22			-20											50
prev2 floor									-22
prev2 found									29									26
prev2 frame				22
prev2 fridge				-38
prev2 front				-17
prev2 full				-29
prev2 gap				33
prev2 garage														38
prev2 garden						26
prev2 glue				25					42
prev2 goes													24
prev2 going				-13
prev2 green				-22					-21											69
prev2 ground												24
prev2 hall																					20
prev2 handrail						37
prev2 hang				-22
prev2 hard				25
prev2 heat mat																			44
prev2 held				-19					63
prev2 high				-43
prev2 hinge				20
prev2 hole				-14
prev2 hood				56																-19
prev2 hose				71
prev2 hot				-25						46
prev2 hung				18		18
prev2 island				42		-39									26
prev2 job						48
prev2 joist				21		38
prev2 kitchen						37
prev2 laid				-30							-20
prev2 landing				47
prev2 last												24				20
prev2 leak									31
prev2 leave																		25
prev2 legs				-23		-42
prev2 level						-17
prev2 light									35
prev2 line									17				-14
prev2 list				-23
prev2 living room				-20
prev2 long						-21
prev2 loose				-36					40
prev2 lot				31
prev2 master				-35
prev2 me						-20
prev2 meter													27		34
prev2 microwave													35
prev2 middle														43
prev2 more				-24		42							31
prev2 n						27						26		31
prev2 nail																				47
prev2 need				-29
prev2 new				22		14									37
prev2 number				20
prev2 oak				26		32
prev2 old				40
prev2 open						22
prev2 opening				27
prev2 ordered						40
prev2 other				22		-18	14					-34
prev2 owner																						21
prev2 p									-20	37	-30		34
prev2 packed				44														28
prev2 painted						33
prev2 panel									-23				46
prev2 picture				31
prev2 pipe				-35					-18	60								-16
prev2 place																						20
prev2 plate				13
prev2 plumber				19						26					22
prev2 porch				36
prev2 post				-29
prev2 pull				-54
prev2 pulled									-19	28
prev2 put															29
prev2 radiator				39
prev2 rail				-16
prev2 ran				39					23			26
prev2 read				34					54
prev2 replaced				-29					28				-23
prev2 return				-16																	33
prev2 rise						-24		41
prev2 rm																		28	37
prev2 room						-15
prev2 runs				-26											40
prev2 salon				-13							35									42
prev2 same						-19			-32
prev2 say				25
prev2 says				69
prev2 screen				37
prev2 screw				29
prev2 scribed						58
prev2 second							25
prev2 see				28		25
prev2 send				38
prev2 sheet				61
prev2 shelf																		24
prev2 shelve				-14
prev2 shop						16					22
prev2 short													24		20							-26
prev2 sits				-19		28				25
prev2 sitting																	31
prev2 slab												25
prev2 spot				-38						-15	22
prev2 stair						49
prev2 step								32
prev2 stud				47
prev2 swapped				-12					39
prev2 switch				-26											73
prev2 tell													21
prev2 tested									48		-29
prev2 thermostat									48
prev2 thing				44
prev2 tile						-24
prev2 time													20			24
prev2 told									-22	27
prev2 took				-19
prev2 top																	28
prev2 tread						31
prev2 trim				33
prev2 trip														21
prev2 truck									33
prev2 unit				28
prev2 upstair										48
prev2 us						60
prev2 used									-19	42
prev2 valve				28					49						18
prev2 wait				30
prev2 walk				-38
prev2 wall				-15								12		33
prev2 want																			19
prev2 water				-22		28
prev2 way				-17						29			21
prev2 went				-21		18
prev2 wet												60
prev2 whoever														30
prev2 wide											25
prev2 window				-29
prev2 wire				-11					41
prev2 wrong						-25					18
prev2 x				-32					-29		38
read earlier V			24
read earlier bar			21
read earlier cfm			54
read earlier ft			20
read earlier in wc			-48
read earlier lb			38
read earlier ohm			17
read last			40
read last %			24
read last 0			55
read last 0 V			50
read last 0 cfm			49
read last 0 ft			50
read last 0 in			29
read last 0 mm			29
read last 0 ohm			45
read last 0 psi			23
read last 1			66
read last 1 %			57
read last 1 A			48
read last 1 C			65
read last 1 F			27
read last 1 V			54
read last 1 bar			46
read last 1 ft			8
read last 1 in			30
read last 1 lb			36
read last 1 m			23
read last 1 mm			50
read last 1 ohm			42
read last 1 psi			31
read last 1.			30
read last 1. %			45
read last 2			31
read last 2 F			7
read last 2 psi			41
read last 2.			20
read last 2. in			46
read last 2. m			-16
read last 3 F			49
read last 3 in/ft			-21
read last 3 m			22
read last 3 sq ft			-27
read last 3. %			-30
read last 3. A			-25
read last 3. F			22
read last 3. V			-19
read last 3. m			-30
read last 3. psi			36
read last A			18
read last C			100
read last F			31
read last V			30
read last bar			21
read last bare 0			58
read last bare 0 F			22
read last bare 0 V			33
read last bare 0 in			50
read last bare 0 ohm			23
read last bare 1			75
read last bare 1 %			46
read last bare 1 A			39
read last bare 1 F			46
read last bare 1 mm			50
read last bare 1 psi			33
read last bare 1.			48
read last bare 1. in			33
read last bare 1. mm			17
read last bare 2			104
read last bare 2 %			-19
read last bare 2 in			74
read last bare 2.			32
read last bare 3			27
read last bare 3.			17
read last bare 3. in			-9
read last cfm			51
read last gpm			64
read last in wc			30
read last in/ft			-21
read last m			-23
read last mm			23
read last ohm			48
read last psi			45
read last said 0			53
read last said 0 V			38
read last said 0 ft			57
read last said 0 mm			27
read last said 1			62
read last said 1 %			49
read last said 1 A			30
read last said 1 V			26
read last said 1 bar			62
read last said 1 cfm			24
read last said 1 ft			11
read last said 1 in			36
read last said 1 lb			36
read last said 1 mm			37
read last said 1 ohm			24
read last said 1. mm			-24
read last said 2			-15
read last said 2 in			-14
read last said 2 mm			-16
read last said 2. m			-16
read last said 3 in/ft			-21
read last said 3 m			22
read last said 3 sq ft			-27
read last said 3. m			-30
read last said 3. psi			21
read last same noun			23
read last same noun V			18
read last same noun ft			36
read last same noun ohm			35
read last sq ft			61
read last subject area 1			37
read last subject fixture 0			35
read last subject fixture 1			20
read last subject fixture 2			22
read last subject fixture 2 in			38
read last subject material 0			23
read last subject material 0 in			-14
read last subject material 1			34
read last subject material 1 %			51
read last subject material 1 in			36
read last subject material 2 mm			25
read last subject none 0			34
read last subject none 0 V			31
read last subject none 0 ft			53
read last subject none 0 in			30
read last subject none 1			80
read last subject none 1 %			25
read last subject none 1 C			68
read last subject none 1 V			49
read last subject none 1 ft			17
read last subject none 1 m			39
read last subject none 1 mm			56
read last subject none 1 ohm			41
read last subject none 2			20
read last subject none 2 F			68
read last subject none 2 m			-23
read last subject none 2 psi			67
read last subject none 2 sq ft			-35
read last subject own 0			88
read last subject own 0 in			41
read last subject own 1			62
read last subject own 1 %			63
read last subject own 1 ft			-45
read last subject own 1 in			30
read last subject own 1 mm			34
read last subject own 2 %			-18
read last subject part 1 in			39
read last subject person 0			77
read last subject person 0 in			31
read last subject person 0 mm			64
read last subject person 1			42
read last subject person 1 F			63
read last subject person 1 ft			-41
read last subject person 1 in			29
read last subject pointer 0			17
read last subject pointer 0 ft			30
read last subject pointer 1			49
read last subject pointer 1 F			22
read last subject pointer 2			44
read last subject pointer 2 F			42
read last subject surface 1 in			22
read last subject surface 2 in			50
read last subject surface 2 mm			24
read last subject tells 0			46
read last subject tells 1			84
read last subject tells 1 A			15
read last subject tells 1 in			36
read last subject tells 2			-20
read last uF			20
read last w-1 #			14
read last w-1 # F			12
read last w-1 # V			25
read last w-1 # in			-24
read last w-1 # mm			12
read last w-1 # sq ft			34
read last w-1 a in			-35
read last w-1 all			-22
read last w-1 all in			-14
read last w-1 and			53
read last w-1 and mm			55
read last w-1 are			36
read last w-1 are in			22
read last w-1 at			35
read last w-1 at %			29
read last w-1 be			79
read last w-1 be in			87
read last w-1 by ft			65
read last w-1 by in			-11
read last w-1 for			50
read last w-1 for in			35
read last w-1 got ft			-29
read last w-1 got in			37
read last w-1 had			-11
read last w-1 had in			-12
read last w-1 have			46
read last w-1 have in			57
read last w-1 is			67
read last w-1 is mm			41
read last w-1 it in			31
read last w-1 it's			-18
read last w-1 it's in			-23
read last w-1 needs			93
read last w-1 needs in			59
read last w-1 not			-39
read last w-1 not in			-30
read last w-1 of in			-12
read last w-1 of mm			-30
read last w-1 on in			-38
read last w-1 only			51
read last w-1 only in			62
read last w-1 other			-22
read last w-1 other in			-23
read last w-1 out			38
read last w-1 over			53
read last w-1 rated			26
read last w-1 reads			48
read last w-1 say			22
read last w-1 says			62
read last w-1 says A			18
read last w-1 says F			26
read last w-1 says in			43
read last w-1 set			-57
read last w-1 that's			33
read last w-1 the			-17
read last w-1 the ft			-14
read last w-1 to			93
read last w-1 to F			40
read last w-1 to in			35
read last w-1 to psi			93
read last w-1 under			59
read last w-1 under %			33
read last w-1 want			52
read last w-1 want in			-16
read last w-1 wanted			39
read last w-1 wanted in			39
read last w-1 wants			90
read last w-1 wants in			71
read last w-1 wants mm			45
read last w-1 was			61
read last w-1 with			-19
read of same noun			21
read of same noun V			18
read of same noun ft			36
read of same noun ohm			35
s # # percent		-23
s # # pressure		21
s # CONJ	30	37
s # CONJ length		33
s # COP	-26
s # PREP area		-15
s # PREP length		49
s # PRON	-31
s # Votherp	-32
s # Vworkbp		24
s # Vworkbp length		24
s # tarea	-38
s # tdefect	-36	39
s # tfixture	-31
s # tmaterial	-24
s # tsurface	-37
s CONJ #	-37	-15
s CONJ # length		-15
s CONJ tsurface	-29
s CONJ w		32
s CONJ w length		29
s COP PREP	-21	43
s COP w	36
s DET #	-35
s DET CONJ		-37
s DET CONJ length		-37
s DET DET		30
s DET PREP	-38
s DET Vworkb		9
s DET Vworkb length		-25
s DET tfinish		-36
s DET tfinish length		-36
s DET tfixture	-12
s DET tpart	-14
s DET tsurface		24
s DET tsurface length		24
s DET ttool		-17
s DET ttool length		-17
s DET w	-9	-34
s M( #		-29
s M- #	-35
s M@ # length		-12
s NEG #	-48
s OPR w	-14
s PREP # angle		12
s PREP # other		45
s PREP # pressure		40
s PREP # temperature		19
s PREP DET	24	15
s PREP DET length		14
s PREP SUB	-12	24
s PREP Ton	-11
s PREP Vworkb		-24
s PREP Vworkb length		-24
s PREP Vworkpp		-35
s PREP Vworks	-17
s PREP tmaterial	-33
s PREP tpart	-17
s PREP tsurface	-20
s PREP tsurfaceVworkb	-18
s PREP tsurfaceVworks	-19
s PRON #	-40
s PRON # percent		27
s PRON PREP		22
s PRON PREP length		40
s PRON tdefect		33
s PRON tdefect length		33
s PRON w		11
s Q0 #	-42
s Vhaveb #	16
s Vhavepp #	-29
s Vmeasurei #	55
s Vmeasurei PREP		30
s Vmeasurepp PREP		25
s Vmeasurepp PREP length		18
s Vmeasures #	53	26
s Vmeasures # length		19
s Vmeasures # other		-28
s Vmeasures PREP		22
s Vmeasures PREP length		21
s Vmeasures tdefect		-11
s Vmeasures tdefect length		27
s Vmeasures w		43
s Vneedb PREP		25
s Vneeds PREP		25
s Vneeds PREP length		23
s Votherb # length		31
s Votherb PREP	38	42
s Votherb PREP length		44
s Votherb w		-20
s Votherb w length		-20
s Votheri #	25
s Votherp PREP	34	35
s Votherp PREP length		32
s Votherp tdefect		27
s Votherp tdefect length		27
s Votherp w	-26
s Votherp w length		-36
s Vothers #		-17
s Vothers # length		-17
s Vsayb #		30
s Vsayb # length		30
s Vsayb PREP	22	-26
s Vsayb PREP length		-19
s Vworkb #	-21
s Vworkb # length		35
s Vworkb PREP length		47
s Vworkb w	-31	-33
s Vworkb w length		-33
s Vworkbpp #		24
s Vworkbpp # length		23
s Vworkbpp PREP		-16
s Vworkbpp PREP length		-29
s Vworkbpp w		23
s Vworkbpp w length		23
s Vworki #		53
s Vworkpp #	-37
s Vworkpp w		47
s Vworkpp w length		47
s Vworks w		15
s Vworks w length		15
s tarea PREP	-24	39
s tdefect #		37
s tdefect # length		35
s tdefect PREP		34
s tdefect PREP length		34
s tdefectVotheri PREP		29
s tdefectVotheri PREP length		23
s tdefectVotherpp #		28
s tdefectVotherpp # length		28
s tdefectVworkpp PREP		37
s tdefectVworkpp PREP length		37
s tfinish #	-41	-41
s tfixture #		21
s tfixture # length		20
s tfixture PREP		31
s tfixture PREP length		31
s tfixture w	-32	24
s tfixture w length		24
s tmaterial #		-24
s tmaterial # length		-28
s tmaterial PREP		-30
s tmaterial w		66
s tmaterial w length		54
s tmaterialVworkb #	-59	-23
s tmaterialVworkb # length		-23
s tmaterialVworkb PREP		50
s tmaterialVworkb PREP length		50
s tpart # length		-46
s tpart w		29
s tpart w length		29
s tpart's #		-28
s tpart's # length		-28
s tpartVworkb #		63
s tpartVworks PREP		24
s tsurface #	42
s tsurface PREP		36
s tsurface PREP length		35
s tsurface's #	44
s tsurface's DET		22
s tsurface's DET length		22
s tsurface's PREP		39
s tsurfaceVworkb #		27
s tsurfaceVworkb # length		27
s tsurfaceVworkb PREP		23
s tsurfaceVworkb PREP length		23
s tsurfaceVworki #		32
s w # temperature		-7
s w CONJ		-38
s w CONJ length		-38
s w PREP	-32
s w tdefect	-21
s w tmaterial	22
s w tmaterialVworks	-18
s w tpart	-17
s w tsurface	18
s w's PREP		30
s w's PREP length		30
s wly #	18	33
s wly # length		31
s wly PREP		-17
s wly PREP length		-24
s wly w		40
s wly w length		40
s+1 # <0.1	-63
s+1 # <0.6	-45
s+1 # <0.6 slope		24
s+1 # <1		-19
s+1 # <1 length		-20
s+1 # <100	-63	60
s+1 # <100 length		28
s+1 # <1000		64
s+1 # <1000 length		16
s+1 # <115		28
s+1 # <115 length		32
s+1 # <12 current		-26
s+1 # <160	46	51
s+1 # <160 length		47
s+1 # <2	-56
s+1 # <2 length		30
s+1 # <20 percent		24
s+1 # <200		65
s+1 # <26	-45
s+1 # <26 percent		28
s+1 # <260	10
s+1 # <260 length		-24
s+1 # <3	-38	-7
s+1 # <3000	-38
s+1 # <32	22
s+1 # <32 length		41
s+1 # <32 percent		34
s+1 # <40		29
s+1 # <400	19	55
s+1 # <400 other		23
s+1 # <50	-36	27
s+1 # <60		37
s+1 # <600	9
s+1 # <72		42
s+1 # <72 length		41
s+1 # <72 percent		-12
s+1 # decimal	17	41
s+1 # decimal length		22
s+1 # quarter slope		16
s+1 # whole other		-25
s+1 # whole power		-58
s+1 # whole volume		11
s+1 CONJ <0.6		-21
s+1 CONJ <0.6 length		-30
s+1 CONJ <16	-18	33
s+1 CONJ <16 length		23
s+1 CONJ <40		29
s+1 CONJ <40 length		25
s+1 CONJ <5		-32
s+1 CONJ <5 length		-32
s+1 CONJ <50		50
s+1 CONJ <8	-26
s+1 CONJ half length		-23
s+1 COP	-29
s+1 COP <3	-22
s+1 COP whole	-29	19
s+1 COP whole length		36
s+1 DET	-20
s+1 DET <0.6		40
s+1 DET <0.6 length		40
s+1 DET <12		21
s+1 DET <12 length		9
s+1 DET <3		-42
s+1 DET <3 length		-31
s+1 DET <5		18
s+1 DET <5 length		18
s+1 DET <8 length		57
s+1 DET decimal	29
s+1 DET quarter		19
s+1 DET quarter length		12
s+1 DET whole	-33
s+1 M-	-31	-32
s+1 M- whole	-31
s+1 MOD	-30
s+1 MOD whole	-30
s+1 NEG fine		-26
s+1 NEG fine length		-26
s+1 NEG half		-32
s+1 NEG half length		-32
s+1 NEG length		-56
s+1 NEG whole		52
s+1 PREP <100		-15
s+1 PREP <100 length		-22
s+1 PREP <1000	26
s+1 PREP <115		34
s+1 PREP <115 length		44
s+1 PREP <12	-28	38
s+1 PREP <130	18
s+1 PREP <16		35
s+1 PREP <16 length		27
s+1 PREP <160	49	48
s+1 PREP <160 length		42
s+1 PREP <2	-55
s+1 PREP <2 area		-28
s+1 PREP <2 volume		-32
s+1 PREP <26	10	20
s+1 PREP <26 length		29
s+1 PREP <260		-14
s+1 PREP <260 length		-13
s+1 PREP <3	-33	16
s+1 PREP <3 length		39
s+1 PREP <3000	26
s+1 PREP <32	51
s+1 PREP <32 length		-15
s+1 PREP <40	17	30
s+1 PREP <40 length		37
s+1 PREP <400	24	48
s+1 PREP <400 length		42
s+1 PREP <5	-21
s+1 PREP <5 length		48
s+1 PREP <50	52	34
s+1 PREP <60	50
s+1 PREP <600	-28
s+1 PREP <72	23
s+1 PREP <72 length		-46
s+1 PREP <8	-33
s+1 PREP <85		-43
s+1 PREP <85 length		-18
s+1 PREP current		42
s+1 PREP decimal	33	31
s+1 PREP decimal length		19
s+1 PREP decimal voltage		30
s+1 PREP quarter		40
s+1 PREP quarter length		44
s+1 PREP temperature		53
s+1 PREP whole temperature		53
s+1 PRON	-37	-32
s+1 PRON length		-30
s+1 PRON whole	-37	33
s+1 Q0	-35	-17
s+1 Q0 whole	-35	-47
s+1 Q0 whole length		-24
s+1 Qcount		-50
s+1 Qcount length		-67
s+1 Qcount whole		-22
s+1 Qlength <2	44
s+1 Qlength length		26
s+1 SUB		28
s+1 SUB <12 length		-32
s+1 SUB <3 length		41
s+1 SUB decimal	49
s+1 SUB fine		21
s+1 SUB fine length		18
s+1 SUB other		46
s+1 SUB whole		16
s+1 Ton length		-47
s+1 Vmovepp	44
s+1 Vmovepp length		29
s+1 Vmovepp whole		35
s+1 Votherb	-42	-68
s+1 Votherb length		-79
s+1 Votherb whole	-42
s+1 Vothers	-40
s+1 Vothers whole	-40
s+1 Vworkb	-45
s+1 Vworkb <0.6		33
s+1 Vworkb <2		29
s+1 Vworkb <2 length		29
s+1 Vworkb <8		-43
s+1 Vworkb whole	-45
s+1 Vworkbpp	-21	-31
s+1 Vworkbpp length		-26
s+1 Vworkbpp whole	-21
s+1 Vworkpp <12	-13
s+1 Vworkpp <2	-18
s+1 Vworkpp <3	-24
s+1 Vworkpp whole length		50
s+1 Vworks	-31
s+1 Vworks <5	-21
s+1 Vworks whole	-31
s+1 tarea	-23
s+1 tarea whole	-23
s+1 tdefect	-31
s+1 tdefect <0.1		22
s+1 tdefect <0.1 length		22
s+1 tdefect <0.6		43
s+1 tdefect <0.6 length		43
s+1 tdefect <1		23
s+1 tdefect <1 length		23
s+1 tdefect <2	-33
s+1 tdefect <3 length		-11
s+1 tdefect <5	-22
s+1 tdefect <5 length		62
s+1 tdefect <8		38
s+1 tdefect <8 length		38
s+1 tdefect half		24
s+1 tdefect half length		24
s+1 tdefect length		34
s+1 tdefect quarter		37
s+1 tdefect quarter length		37
s+1 tdefect whole	-44
s+1 tdefectVotheri	-35
s+1 tdefectVotheri whole	-35
s+1 tdefectVotherp	-22
s+1 tdefectVotherp whole	-22
s+1 tdefectVotherpp	-36
s+1 tdefectVotherpp whole	-36
s+1 tdefectVothers	-30
s+1 tdefectVothers whole	-30
s+1 tdefectVworkpp	-27
s+1 tdefectVworkpp whole	-27
s+1 tdefectVworks	-42
s+1 tdefectVworks whole	-42
s+1 tfinish	-57	-34
s+1 tfinish length		-50
s+1 tfinish whole	-57	-41
s+1 tfinish whole length		-66
s+1 tfinishVworkb		-13
s+1 tfinishVworkb length		57
s+1 tfixture	-19
s+1 tfixture whole	-20
s+1 tmaterial	-34	-63
s+1 tmaterial <0.6		-44
s+1 tmaterial <0.6 length		-44
s+1 tmaterial <12	-64
s+1 tmaterial <16	-55
s+1 tmaterial <2	-17
s+1 tmaterial <3	-19
s+1 tmaterial <5	-25
s+1 tmaterial <8	-24
s+1 tmaterial decimal	-90
s+1 tmaterial length		-46
s+1 tmaterial whole	-26	-28
s+1 tmaterialVworkb	-30
s+1 tmaterialVworkb whole	-30
s+1 tmaterialVworks	-28
s+1 tmaterialVworks <3	-22
s+1 tmaterialVworks whole	-28
s+1 tpart	-28	-45
s+1 tpart <2	-18
s+1 tpart <3	-27
s+1 tpart <5	-24
s+1 tpart <8	-20
s+1 tpart whole	-28
s+1 tpartVworkb	-46
s+1 tpartVworkb whole	-46
s+1 tpartVworks	-34
s+1 tpartVworks whole	-34
s+1 trole		-11
s+1 trole length		13
s+1 tsurface	-23
s+1 tsurface <0.6		49
s+1 tsurface <0.6 length		49
s+1 tsurface <1		-38
s+1 tsurface <12	-34
s+1 tsurface <16	-43
s+1 tsurface <2	-23
s+1 tsurface <5	-26
s+1 tsurface <8	-28
s+1 tsurface fine		38
s+1 tsurface fine length		38
s+1 tsurface whole	-23
s+1 tsurfaceVotherb		43
s+1 tsurfaceVotherb length		43
s+1 tsurfaceVworkb	-23	-22
s+1 tsurfaceVworkb <2	-24
s+1 tsurfaceVworkb whole	-23
s+1 tsurfaceVworks	-22
s+1 tsurfaceVworks <5	-21
s+1 tsurfaceVworks whole	-22
s+1 ttool		-36
s+1 ttool length		-35
s+1 ttool whole		-36
s+1 ttool whole length		-35
s+1 w <0.1		61
s+1 w <0.1 length		61
s+1 w <100	24
s+1 w <130	19	66
s+1 w <160		-25
s+1 w <160 length		-25
s+1 w <2	-30
s+1 w <20	60	21
s+1 w <20 length		39
s+1 w <260		55
s+1 w <3	-42
s+1 w <32		48
s+1 w <32 length		54
s+1 w <400	29
s+1 w <5	-35
s+1 w <50	47
s+1 w <50 length		27
s+1 w <60		30
s+1 w <600	21	19
s+1 w <600 length		19
s+1 w <72 length		-11
s+1 w <8	-43	-20
s+1 w <8 length		-15
s+1 w <85		60
s+1 w <85 length		55
s+1 w percent		-32
s+1 w pressure		-30
s+1 w voltage		21
s+1 w weight		21
s+1 w whole percent		-32
s+1 w whole voltage		21
s+1 w's	-30
s+2 CONJ #	38
s+2 CONJ DET	-45
s+2 CONJ PRON		30
s+2 CONJ Q0	-52	-43
s+2 CONJ Qlength		-25
s+2 CONJ Qlength length		-25
s+2 CONJ SUB length		-26
s+2 CONJ w	-32	7
s+2 CONJ w length		22
s+2 DET #	25
s+2 DET DET		-23
s+2 DET DET length		-25
s+2 DET PREP		17
s+2 DET PREP length		17
s+2 DET tsurfaceVworkb		46
s+2 DET tsurfaceVworkb length		46
s+2 DET w	-13
s+2 DET w length		20
s+2 M- Q0	-31
s+2 NEG Qlength		-47
s+2 NEG Qlength length		-47
s+2 NEG w		16
s+2 PREP #		27
s+2 PREP # length		38
s+2 PREP DET flow		6
s+2 PREP DET voltage		50
s+2 PREP DET volume		-34
s+2 PREP DET weight		23
s+2 PREP Nidiom		33
s+2 PREP OPR	-39
s+2 PREP PREP		36
s+2 PREP PREP length		45
s+2 PREP PRON	22
s+2 PREP PRON length		-13
s+2 PREP Q0		-6
s+2 PREP Qlength	-37	30
s+2 PREP Qlength length		31
s+2 PREP Qtime	-24	33
s+2 PREP SUB		40
s+2 PREP SUB length		38
s+2 PREP Vmoveb	-54
s+2 PREP Vworkb		41
s+2 PREP Vworkb length		48
s+2 PREP Vworkpp		64
s+2 PREP tfixture length		28
s+2 PREP tmaterial	12	-15
s+2 PREP tmaterial length		49
s+2 PREP tmaterialVworkb		61
s+2 PREP tmaterialVworkb length		61
s+2 PREP tpart		-37
s+2 PREP tsurface	30
s+2 PREP tsurfaceVworkb		55
s+2 PREP tsurfaceVworkb length		56
s+2 PREP w	-24
s+2 Q0 #	-37
s+2 SUB COP	30	24
s+2 SUB COP length		24
s+2 SUB DET		50
s+2 SUB DET length		46
s+2 SUB PRON length		-49
s+2 Ton #	9
s+2 Vmovepp PREP		-36
s+2 Vworkb #		-59
s+2 Vworkb # length		-57
s+2 Vworkb PREP		28
s+2 Vworkb PREP length		44
s+2 Vworkb SUB		36
s+2 Vworkb SUB length		36
s+2 Vworkbp #		33
s+2 Vworkbp # length		33
s+2 Vworkpp #	-23	-23
s+2 Vworks #	-31
s+2 tarea #	-50
s+2 tdefect #		39
s+2 tdefect # length		48
s+2 tdefect PREP	-34
s+2 tdefect w		32
s+2 tdefect w length		32
s+2 tfinish #	-66	-36
s+2 tfinish # length		-54
s+2 tfixture w	-19
s+2 tmaterial #	-42
s+2 tmaterial PREP	-29
s+2 tmaterial w	-25
s+2 tmaterialVworkb #	-40
s+2 tmaterialVworks #	-15
s+2 tmaterialVworks PREP	-26
s+2 tpart #	-25
s+2 tpart PREP	-23
s+2 tpart w	-26
s+2 tsurface #	-35	32
s+2 tsurface # length		33
s+2 tsurface PREP		46
s+2 tsurface PREP length		33
s+2 tsurface Vworkpp	-24
s+2 tsurfaceVworkb #	-19
s+2 tsurfaceVworks #	-19
s+2 ttool #		-30
s+2 ttool # length		-30
s+2 w # pressure		-35
s+2 w COP	-28
s+2 w DET		-22
s+2 w NEG		-18
s+2 w NEG length		-18
s+2 w PREP	-22	28
s+2 w PREP length		34
s+2 w Q0	-37	-10
s+2 w Q0 length		-28
s+2 w Qlength		-20
s+2 w Qlength length		-20
s+2 w SUB		31
s+2 w SUB length		30
s+2 w Vworkpp		35
s+2 w tdefect	36
s+2 w tsurface	-27
s+2 w w	-35	40
s-1 # flow		26
s-1 # other		25
s-1 # volume		-24
s-1 COP percent		24
s-1 COP weight		29
s-1 DET	-25
s-1 DET power		-30
s-1 DET volume		22
s-1 HAVE	-28	40
s-1 HAVE length		40
s-1 M(	-51	-45
s-1 M( length		-29
s-1 M+	-15
s-1 M-	-39
s-1 NEG	-42	-75
s-1 NEG length		-60
s-1 Nidiom		-34
s-1 Nidiom length		-24
s-1 OPR	-52	-37
s-1 OPR length		-37
s-1 PREP angle		-38
s-1 PREP area		31
s-1 PREP pressure		48
s-1 PREP temperature		23
s-1 PREP voltage		69
s-1 PREP volume		-50
s-1 PREP weight		42
s-1 PRON area		-32
s-1 PRON percent		-11
s-1 Q0	-57	-8
s-1 Qlength		30
s-1 Qlength length		30
s-1 Qpack	-51
s-1 SUB	-39
s-1 Ton	-30
s-1 Ton length		39
s-1 Vhaveb	-13	28
s-1 Vhaveb length		24
s-1 Vhavepp	-25
s-1 Vmeasureb		48
s-1 Vmeasureb length		46
s-1 Vmeasurebpp	37	22
s-1 Vmeasurei	44
s-1 Vmeasurei length		31
s-1 Vmeasurei percent		23
s-1 Vmeasurepp weight		-39
s-1 Vmeasures	63	30
s-1 Vmeasures length		25
s-1 Vmoveb	37
s-1 Vmoves	-14
s-1 Vneedb		-19
s-1 Vneedpp	-21
s-1 Vneeds		38
s-1 Votherb length		30
s-1 Votheri	19
s-1 Votherp length		-12
s-1 Votherp percent		40
s-1 Votherpp	-64
s-1 Vothers	-24
s-1 Vsayb		19
s-1 Vworkb	-18
s-1 Vworkbp		25
s-1 Vworkbp length		30
s-1 Vworkbpp	-27	-10
s-1 Vworkbpp length		-18
s-1 Vworki		32
s-1 Vworki length		21
s-1 Vworkpp	-14
s-1 Vworks	37
s-1 tarea	-27
s-1 tdefect	-11	43
s-1 tdefect length		46
s-1 tdefect's		37
s-1 tdefect's length		36
s-1 tdefectVotherb		62
s-1 tdefectVotherb length		62
s-1 tdefectVotheri		52
s-1 tdefectVotheri length		48
s-1 tdefectVotherpp	-35	58
s-1 tdefectVotherpp length		58
s-1 tdefectVothers		50
s-1 tdefectVothers length		45
s-1 tdefectVworkpp	-60	48
s-1 tdefectVworkpp length		48
s-1 tfinish	-50	-92
s-1 tfinish length		-115
s-1 tfixture		21
s-1 tfixture length		29
s-1 tfixture's		8
s-1 tfixture's length		8
s-1 tmaterial	-37	-40
s-1 tmaterial length		-29
s-1 tmaterial's	7	-31
s-1 tmaterial's length		-31
s-1 tmaterialVworkb	-48	-13
s-1 tmaterialVworkb length		-19
s-1 tmaterialVworks		-72
s-1 tpart	-50	-29
s-1 tpart length		-34
s-1 tpart's	73
s-1 tpartVworkb		43
s-1 tpartVworkb length		33
s-1 tpartVworks		44
s-1 tpartVworks length		25
s-1 tsurface	23	38
s-1 tsurface's		33
s-1 tsurface's length		31
s-1 tsurfaceVworkb	37	45
s-1 tsurfaceVworkb length		43
s-1 tsurfaceVworki		62
s-1 tsurfaceVworks		42
s-1 w area		44
s-1 w other		-45
s-1 w percent		-29
s-1 w pressure		21
s-1 w temperature		-23
s-1 w voltage		-49
s-1 w's	41
s-1 wly		40
s-1 wly length		33
s-2 # # flow		26
s-2 # # other		25
s-2 # # volume		-24
s-2 # DET	-21	-60
s-2 # DET length		-56
s-2 # PREP length		-11
s-2 # Vneeds		50
s-2 # Vneeds length		31
s-2 # Votherb		-36
s-2 # Votherb length		-8
s-2 # Votherp length		16
s-2 # Vsayb		44
s-2 # Vworkb		39
s-2 # Vworkb length		37
s-2 # Vworkbpp	-21
s-2 # Vworkbpp length		-32
s-2 # Vworkpp		29
s-2 # Vworkpp length		27
s-2 # tarea	-27
s-2 # tdefect		26
s-2 # tdefect length		23
s-2 # tfixture	32
s-2 # tfixture length		43
s-2 # tmaterial	-36	-56
s-2 # tmaterial length		-33
s-2 # tmaterialVworkb	-45
s-2 # tpart	-28
s-2 # tpart length		-21
s-2 # tpartVworkb		-33
s-2 # tsurface	39
s-2 # tsurface's	58	66
s-2 # tsurface's length		64
s-2 # w		49
s-2 # w length		63
s-2 # w pressure		17
s-2 # wly	23	21
s-2 CONJ DET	-18
s-2 COP DET	20	-25
s-2 COP PREP	56
s-2 COP PREP length		42
s-2 COP Vworkpp		55
s-2 COP Vworkpp length		34
s-2 COP tdefect		35
s-2 COP tdefect length		35
s-2 COP wly		26
s-2 COP wly length		23
s-2 DET PREP		39
s-2 DET Qlength	-15
s-2 DET tarea	15
s-2 DET tfinish	-13
s-2 DET tfixture	-21	45
s-2 DET tfixture length		45
s-2 DET tmaterial		72
s-2 DET tmaterial length		70
s-2 DET tmaterial's		-26
s-2 DET tmaterial's length		-26
s-2 DET tpart length		30
s-2 DET tpart's		20
s-2 DET tpart's length		20
s-2 DET tsurface		30
s-2 DET tsurface length		30
s-2 DET tsurface's	22	36
s-2 DET tsurface's length		34
s-2 DET w's	-21
s-2 MOD Votherb		-28
s-2 NEG DET		-39
s-2 Nidiom COP		30
s-2 Nidiom COP length		30
s-2 Nlabel PREP	-41
s-2 OPR PREP	39	-38
s-2 OPR PREP length		-38
s-2 PREP DET	-33	-44
s-2 PREP DET length		-30
s-2 PREP PREP percent		34
s-2 PREP PRON	-49	-64
s-2 PREP PRON length		-53
s-2 PREP Q0	-12
s-2 PREP Votherb	-29	36
s-2 PREP Votherb length		33
s-2 PREP Vworkb	-40
s-2 PREP Vworkb length		33
s-2 PREP tmaterial	-50	-38
s-2 PREP tmaterial length		-38
s-2 PREP tpartVworkb		31
s-2 PREP w	-35	-27
s-2 PREP w length		-17
s-2 PRON COP	-52	-20
s-2 PRON COP length		-39
s-2 PRON DET	-30
s-2 PRON DET length		-43
s-2 PRON PREP	-23
s-2 PRON PREP length		41
s-2 PRON Vhavepp	-23
s-2 PRON Vmeasurei		40
s-2 PRON Vneedpp	-22
s-2 PRON Vneeds		-19
s-2 PRON Vneeds length		-19
s-2 PRON Votherb		26
s-2 PRON Votherb length		44
s-2 PRON Votherp length		-7
s-2 PRON Vworkbpp		-29
s-2 PRON Vworkbpp length		-29
s-2 PRON Vworkpp	-42	-53
s-2 PRON Vworkpp length		-60
s-2 PRON w	-24	69
s-2 PRON w length		50
s-2 Q0 M-	-19
s-2 Q0 PREP	-21	-42
s-2 Q0 PREP length		-42
s-2 Q0 w	-25
s-2 Qlength NEG		-18
s-2 Qlength NEG length		-18
s-2 Qlength PREP		-72
s-2 Qlength PREP length		-87
s-2 Qlength w	-22
s-2 Qpack PREP	-41
s-2 Vmeasurei PREP		46
s-2 Vmeasurei PREP length		35
s-2 Vmeasurep PREP	18	35
s-2 Vmeasurep PREP length		34
s-2 Vmeasures PREP		33
s-2 Vmoveb PREP	36	55
s-2 Vmoveb PREP length		55
s-2 Vmoves PREP		29
s-2 Vmoves PREP length		29
s-2 Votherb PREP	31	32
s-2 Votherb PREP length		30
s-2 Votherp DET		62
s-2 Votherp DET length		68
s-2 Votherp PREP	-31	-16
s-2 Votherp PREP length		-16
s-2 Votherp w		-27
s-2 Vsayb PRON		-14
s-2 Vsayb PRON length		-15
s-2 Vworkb DET	-15	13
s-2 Vworkb PREP	-24
s-2 Vworkb PREP length		-23
s-2 Vworkb PRON	-18	28
s-2 Vworkb PRON length		28
s-2 Vworkb w	-27
s-2 Vworkbpp DET		-46
s-2 Vworkbpp PREP	62	55
s-2 Vworkbpp PREP length		42
s-2 Vworki PREP		28
s-2 Vworkpp DET	-17	16
s-2 Vworkpp DET length		27
s-2 Vworkpp PREP	-30
s-2 Vworkpp PREP torque		-28
s-2 Vworkpp PRON		45
s-2 Vworkpp PRON length		41
s-2 Vworks PREP	-28
s-2 tarea PREP	-23	-45
s-2 tarea PREP length		-39
s-2 tarea w		63
s-2 tdefect PREP	-73	52
s-2 tdefect PREP length		52
s-2 tdefect w		48
s-2 tdefect w length		39
s-2 tdefectVotherb PREP		55
s-2 tdefectVotherb PREP length		55
s-2 tdefectVothers PREP		29
s-2 tdefectVworkpp PREP	-31
s-2 tdefectVworkpp PREP length		29
s-2 tdefectVworks PREP		25
s-2 tdefectVworks PREP length		25
s-2 tfinish PREP		43
s-2 tfinish PREP length		43
s-2 tfixture PREP	-35	17
s-2 tfixture PREP length		25
s-2 tfixture Votherp		-35
s-2 tfixture w		45
s-2 tfixture w length		45
s-2 tmaterial COP	-18	-9
s-2 tmaterial Vmeasures		26
s-2 tmaterial w		-30
s-2 tmaterial's PREP		24
s-2 tmaterialVworkb COP		32
s-2 tmaterialVworkb COP length		32
s-2 tmaterialVworkb PREP	-28	23
s-2 tmaterialVworkb PREP length		24
s-2 tmaterialVworks DET		20
s-2 tmaterialVworks DET length		20
s-2 tmaterialVworks PREP		-50
s-2 tpart COP length		-6
s-2 tpart PREP		-13
s-2 tpart PREP length		-30
s-2 tpart Vmeasures		-28
s-2 tpart Votherp		17
s-2 tpart Votherp length		19
s-2 tpart Vworks		43
s-2 tpart w	-53
s-2 tpart w length		76
s-2 trole Vneeds	21
s-2 tsurface COP	55
s-2 tsurface COP length		46
s-2 tsurface PREP		36
s-2 tsurface PREP length		36
s-2 tsurface Votherp		-13
s-2 tsurface's PREP		40
s-2 tsurfaceVotherb PREP		23
s-2 tsurfaceVotherb PREP length		23
s-2 tsurfaceVworkb COP		29
s-2 tsurfaceVworkb COP length		29
s-2 tsurfaceVworkb PREP		-38
s-2 tsurfaceVworkb Vsays	-25
s-2 tsurfaceVworkb w		57
s-2 tsurfaceVworkb w length		55
s-2 ttool PREP		24
s-2 ttool PREP length		24
s-2 w CONJ		-26
s-2 w CONJ length		-26
s-2 w COP		27
s-2 w DET	-35
s-2 w NEG	-29
s-2 w PREP	-19
s-2 w SUB		-32
s-2 w SUB length		-32
s-2 w Vmeasures		46
s-2 w Vneeds	35
s-2 w Votherp		48
s-2 w Votherp length		27
s-2 w Vworkpp	-23	-28
s-2 w tmaterial	-14
s-2 w tmaterial length		52
s-2 w tsurface length		10
s-2 w tsurfaceVworkb		-15
s-2 w tsurfaceVworkb length		-15
s-2 w w	-68
s-2 w w's		32
s-2 w w's length		36
s-2 wly PREP		37
s-2 wly PREP length		37
said last			24
said last %			21
said last F			-28
said last L			-20
said last V			12
said last bar			27
said last cfm			31
said last cm			62
said last deg			17
said last gpm			64
said last ohm			42
said last psi			28
said last sq ft			63
said last sq m			51
said next F			-42
said next m			31
says copula ahead	-19	-25
says copula ahead length		-16
says copula ahead quarter		-38
says copula ahead quarter length		-38
says copula ahead whole	-18
says copula area whole		32
says copula area whole length		26
says copula behind area		27
says copula behind decimal	27	47
says copula behind decimal length		28
says copula behind pressure		-32
says copula behind slope		45
says copula behind temperature		25
says copula behind whole area		32
says copula behind whole flow		-17
says copula behind whole pressure		-32
says copula behind whole temperature		25
says copula behind whole volume		19
says copula fixture fine		12
says copula fixture fine length		12
says copula fixture half		52
says copula fixture half length		52
says copula material fine		49
says copula material fine length		50
says copula material quarter		-35
says copula material quarter length		-35
says copula material whole percent		23
says copula own fine length		52
says copula own half		51
says copula own half length		51
says copula own quarter		22
says copula own quarter length		22
says copula own whole length		27
says copula part decimal		29
says copula part whole voltage		24
says copula person fine		45
says copula person fine length		45
says copula person half		-17
says copula person half length		-17
says copula person quarter		50
says copula person quarter length		50
says copula person whole	-44	-33
says copula pointer decimal	59
says copula surface whole angle		18
says copula tells whole	-44	32
says imperative behind	-12
says imperative behind quarter		-44
says imperative behind quarter length		-48
says imperative behind whole	-15	-12
says imperative none quarter		-44
says imperative none quarter length		-48
says imperative none whole	-14	-12
says imperative own whole	-29
says modal ahead	-38	-38
says modal ahead length		-48
says modal ahead whole	-38
says modal behind	-29	-26
says modal behind fine		43
says modal behind fine length		43
says modal behind whole	-25	-44
says modal behind whole length		-22
says modal material whole		-54
says modal own whole		-19
says modal person fine		-8
says modal person fine length		-8
says modal person whole	-26	-22
says modal person whole length		-14
says modal pointer fine		18
says modal pointer fine length		18
says modal pointer whole	-34	-26
says none behind area		27
says none behind decimal	8
says none behind decimal current		34
says none behind decimal length		-14
says none behind flow		33
says none behind percent		26
says none behind slope		26
says none behind temperature		20
says none behind whole area		23
says none behind whole flow		24
says none behind whole other		22
says none behind whole percent		23
says none behind whole temperature		20
says none behind whole weight		-31
says none none decimal	8
says none none decimal current		34
says none none decimal length		-14
says none none whole area		23
says none none whole flow		24
says none none whole other		22
says none none whole percent		23
says none none whole temperature		20
says none none whole weight		-31
says owed ahead	-28
says owed ahead whole	-28
says owed behind	-16
says owed behind decimal	-12
says owed behind quarter		17
says owed behind quarter length		17
says owed behind whole	-18
says owed fixture fine		35
says owed fixture fine length		35
says owed material whole	-20	33
says owed material whole length		31
says owed none whole	-24	-26
says owed none whole length		-39
says owed own whole	-32	14
says owed person whole length		20
says owed pointer whole	-31	-39
says owed pointer whole length		-39
says owed surface whole	-13
says owed tells whole	-12
says past ahead	-23	-42
says past ahead length		-28
says past ahead whole	-23	-33
says past area whole		28
says past behind	-15
says past behind decimal	16
says past behind half length		13
says past behind percent		29
says past behind pressure		13
says past behind slope		-33
says past behind torque		34
says past behind volume		-32
says past behind weight		-35
says past behind whole	-16
says past behind whole other		-11
says past behind whole percent		29
says past behind whole pressure		9
says past behind whole torque		34
says past fixture quarter		16
says past fixture quarter length		16
says past fixture whole	-25	-31
says past material half		27
says past material half length		27
says past material whole	-32	-13
says past material whole length		-30
says past none decimal		-47
says past none fine		42
says past none fine length		40
says past none half		35
says past none half length		38
says past none quarter		-46
says past none quarter length		-48
says past none whole	-11
says past own whole	-28
says past part whole	-31
says past person half		-28
says past person whole	-13
says past pointer fine		53
says past pointer fine length		53
says past pointer whole		18
says past pointer whole length		25
says past surface fine		44
says past surface fine length		44
says past surface quarter		34
says past surface quarter length		34
says past surface whole length		18
says past tells whole	-38
says present ahead	-24	-51
says present ahead length		-51
says present ahead whole	-24	-59
says present ahead whole length		-58
says present behind	-16
says present behind area		-32
says present behind half		-19
says present behind half length		-20
says present behind length		25
says present behind other		-27
says present behind quarter		23
says present behind quarter length		21
says present behind voltage		40
says present behind volume		-26
says present behind whole	-18
says present behind whole area		-37
says present behind whole length		20
says present behind whole volume		-26
says present fixture whole	17
says present material whole		58
says present material whole length		51
says present own whole	-10
says present part half		27
says present part half length		27
says present part whole		29
says present person whole	-27
says present person whole area		-74
says present person whole percent		-21
says present person whole weight		28
says present pointer half		-27
says present pointer half length		-27
says present pointer quarter		-11
says present pointer quarter length		-11
says present pointer whole	-43	41
says present pointer whole length		38
says present surface fine		40
says present surface fine length		40
says present surface whole	-16	-7
says present surface whole length		-41
says present tells whole length		-13
says present tool whole		-22
size <0.1	-49	37		54											-24
size <0.1 decimal	30			106				-13					-12	-16				36
size <0.1 one				54											-24
size <0.1 whole	-78	36		-21											-26		23
size <0.6	-54			30					-21									39
size <0.6 decimal	-54	51		30					-21									39
size <0.6 one				30					-21									39
size <0.6 quarter		-7
size <0.6 quarter length		-12
size <0.6 quarter slope		39
size <0.6 slope		44
size <1	-35			-12														55
size <1 decimal	-35	11		-12														55
size <1 one				-12														55
size <1 quarter		-32
size <1 quarter length		-29
size <100									36
size <100 fine		24
size <100 fine length		24
size <100 half		-30
size <100 length		-11
size <100 one									36
size <100 percent		-38
size <100 whole		34							39
size <100 whole percent		-38
size <1000						64
size <1000 one						45
size <1000 pair2						64
size <1000 whole		73				64
size <115									22
size <115 fine		-19
size <115 fine length		-19
size <115 length		-8
size <115 one									23
size <115 whole									22
size <12 decimal	20			-21		-18						67	29	85				-28
size <12 half		-32
size <12 half length		-36
size <12 pair2				18		-17
size <12 quarter		45
size <12 quarter length		45
size <12 whole	-30
size <130	-8	45							43				62
size <130 length		-22
size <130 one				-12					44				63
size <130 voltage		50
size <130 whole	-10	40							47				57
size <130 whole length		-31
size <130 whole voltage		44
size <16				28
size <16 area		-29
size <16 decimal	38										27								108
size <16 half		-35
size <16 half length		-35
size <16 pair2				51
size <16 percent		40
size <16 quarter		19
size <16 quarter length		19
size <16 whole				29
size <16 whole area		-29
size <16 whole percent		40
size <160		30				26			54
size <160 one						34			54
size <160 temperature		25
size <160 whole						26			54
size <160 whole temperature		25
size <2	-38
size <2 decimal	35							61
size <2 half		-26
size <2 half length		-26
size <2 volume		-35
size <2 whole	-41
size <2 whole length		27
size <2 whole volume		-21
size <20				31
size <20 fine		64
size <20 fine length		64
size <20 half		21
size <20 half length		54
size <20 one				27
size <20 pair2				33		-17
size <20 percent		25
size <20 whole		-16		32
size <20 whole length		-10
size <20 whole percent		25
size <200		54				28					16
size <200 length		54
size <200 one						43					17
size <200 whole		30				28					16
size <26				30
size <26 current		-39
size <26 one				45
size <26 pair2				-22
size <26 percent		38
size <26 whole	-40			26
size <26 whole current		-57
size <26 whole percent		38
size <260				-12									51
size <260 one				-11		31							51
size <260 voltage		43
size <260 whole				-12		30							42
size <260 whole voltage		43
size <3	-38
size <3 area		-46
size <3 decimal		-16				-47		100					-20
size <3 decimal length		-26
size <3 half		-47
size <3 half length		-47
size <3 pressure		-77
size <3 quarter		36
size <3 quarter length		36
size <3 volume		-27
size <3 whole	-40
size <3 whole length		35
size <3 whole volume		-27
size <3000		50		-18		70
size <3000 one				-18		54
size <3000 pair2						67
size <3000 whole		51		-18		70
size <32	16			37
size <32 fine		45
size <32 fine length		45
size <32 half		35
size <32 half length		35
size <32 length		35
size <32 one																					21
size <32 pair2				50	-15
size <32 quarter		30
size <32 quarter length		30
size <32 whole	15			39
size <40		38		33
size <40 fine		42
size <40 fine length		42
size <40 half		71
size <40 half length		73
size <40 one				29
size <40 pair2				56		-12
size <40 quarter		63
size <40 quarter length		63
size <40 whole				33
size <40 whole length		-12
size <400		39				34											27
size <400 length		-17
size <400 one						45											28
size <400 other		26
size <400 whole		39				34											27
size <400 whole length		-17
size <400 whole other		26
size <5	-31
size <5 angle		23
size <5 current		-33
size <5 decimal	20	41		-17		41							-26		-44	17		23	-21
size <5 decimal length		8
size <5 fine		8
size <5 fine length		8
size <5 half		-39
size <5 half length		-39
size <5 pair1					25
size <5 temperature		-78
size <5 whole	-33
size <5 whole angle		23
size <5 whole length		19
size <5 whole temperature		-78
size <50		26		38
size <50 fine		69
size <50 fine length		69
size <50 one				32
size <50 pair2				45	42	-24
size <50 percent		16
size <50 quarter		78
size <50 quarter length		78
size <50 temperature		31
size <50 weight		72
size <50 whole				36
size <50 whole percent		16
size <50 whole temperature		31
size <50 whole weight		72
size <60	16			36					34
size <60 fine		30
size <60 fine length		30
size <60 one									35
size <60 pressure		26
size <60 temperature		40
size <60 whole	16			36					34
size <60 whole pressure		26
size <60 whole temperature		40
size <600	7			-16		59									-18							30
size <600 one				-11		51									-18							30
size <600 pair2				-24		47
size <600 whole	7			-16		59									-18							30
size <72	13	32		27					29											18
size <72 area		19
size <72 half		41
size <72 half length		41
size <72 length		31
size <72 one				22					33											20
size <72 pair2				48		-22
size <72 quarter		30
size <72 quarter length		30
size <72 weight		48
size <72 whole	13	27		28					29											19
size <72 whole area		19
size <72 whole weight		48
size <8	-33
size <8 area		27
size <8 decimal	-40	17				-19							-15									-26
size <8 half		23
size <8 half length		20
size <8 pair2				31	43	-20
size <8 quarter		32
size <8 quarter length		32
size <8 whole	-32
size <85		19										24
size <85 flow		-20
size <85 half		49
size <85 half length		49
size <85 length		26
size <85 one				39			16					26
size <85 pair2				-10		-18
size <85 percent		-28
size <85 quarter		18
size <85 quarter length		18
size <85 whole												24
size <85 whole flow		-20
size <85 whole percent		-28
subject area		24
subject area be ahead	-14
subject area be behind		37
subject area be behind length		33
subject area length		30
subject area null behind length		29
subject fixture #	-21
subject fixture about		31
subject fixture about length		31
subject fixture at	34	-37
subject fixture at length		-42
subject fixture be ahead	-16
subject fixture have behind		21
subject fixture have behind length		21
subject fixture is	52
subject fixture null behind	14
subject fixture was		-31
subject fixture was length		-36
subject material	-19
subject material a		26
subject material a length		55
subject material are		41
subject material are length		41
subject material area		15
subject material at	40	43
subject material at length		44
subject material be ahead	-22
subject material down		16
subject material down length		16
subject material every		31
subject material every length		31
subject material for		22
subject material for length		22
subject material go behind		29
subject material go behind length		29
subject material have behind	-18
subject material null behind		32
subject material null behind length		36
subject material of	-27
subject material other		56
subject material percent		24
subject material read behind		45
subject material reads		45
subject none # angle		-50
subject none # flow		37
subject none # other		22
subject none # percent		26
subject none # power		32
subject none # pressure		40
subject none # slope		28
subject none (		-48
subject none +	-27
subject none -	-23
subject none <q>	-43	-72
subject none <q> length		-64
subject none <t>		-14
subject none <t> length		24
subject none about	57
subject none all	-22
subject none and		29
subject none and length		26
subject none at	16
subject none at length		-14
subject none be behind	-28
subject none bring behind		-57
subject none bring behind length		-38
subject none buy behind		-28
subject none by		-16
subject none by length		-16
subject none call behind	-16
subject none come behind length		25
subject none current		6
subject none cut	-28	25
subject none cut length		23
subject none down		53
subject none down length		53
subject none drops		21
subject none drops length		21
subject none every		32
subject none every length		32
subject none find behind	51	-56
subject none find behind length		-56
subject none for	-57
subject none from	29
subject none get behind		-61
subject none get behind length		-34
subject none go behind		-30
subject none got	22
subject none grab behind	-23
subject none hang behind		32
subject none hang behind length		32
subject none have behind	31
subject none have behind length		52
subject none hit behind		43
subject none in	6	-19
subject none in length		-12
subject none it		28
subject none it length		26
subject none last	-26
subject none leave behind		26
subject none leave behind length		26
subject none maybe		25
subject none maybe length		20
subject none measure behind length		-15
subject none must behind	29
subject none need behind	-12	-43
subject none need behind length		-58
subject none not	-34
subject none of	-34	-7
subject none of length		-14
subject none on	-23
subject none open		-18
subject none open length		-18
subject none order behind	-32	-41
subject none other	-21
subject none out		53
subject none out length		53
subject none over	-27	66
subject none over length		66
subject none percent		27
subject none prime behind	-43
subject none pull behind	-24
subject none put behind	-21	34
subject none put behind length		36
subject none read		-7
subject none reads	28
subject none run		27
subject none run behind		-24
subject none run behind length		-24
subject none run length		27
subject none sand behind	-18
subject none say		25
subject none say behind		44
subject none say behind length		46
subject none say length		28
subject none screw behind		-23
subject none short		-7
subject none short length		-7
subject none should behind	30
subject none slab		31
subject none slope		39
subject none swap behind		-47
subject none take behind	-15	53
subject none take behind length		53
subject none the	-14	-44
subject none the length		-34
subject none to	35
subject none torque		35
subject none trim behind		29
subject none trim behind length		29
subject none up		18
subject none up length		44
subject none use behind	-36	-33
subject none use behind length		-25
subject none voltage		-19
subject none want behind	-21	27
subject none want behind length		27
subject none wants		19
subject none wants length		19
subject none with	-24	-20
subject none with length		-47
subject none within		41
subject none within length		41
subject none x		-21
subject own	-17
subject own #		-35
subject own # length		-34
subject own a		21
subject own a length		21
subject own about		32
subject own about length		32
subject own all	-20
subject own and	-33
subject own area		23
subject own at		20
subject own at length		67
subject own be ahead		25
subject own be ahead length		41
subject own be behind	-25	23
subject own be behind length		35
subject own current		-29
subject own had	-16
subject own is	-10	36
subject own is length		28
subject own leave ahead		-26
subject own length		24
subject own null ahead		-28
subject own null behind length		37
subject own percent		-19
subject own temperature		14
subject own the	-17	-30
subject own the length		-22
subject own to	47	23
subject own want behind	33
subject own wants	29
subject own was	-48	46
subject own weight		-37
subject part	-22
subject part #	-18
subject part a	-38
subject part about		40
subject part about length		40
subject part at	60	40
subject part at length		21
subject part be ahead	-16
subject part be behind		32
subject part by		19
subject part current		21
subject part have behind		21
subject part have behind length		21
subject part in		-66
subject part in length		-63
subject part is	10
subject part null behind	-19
subject part on	-17
subject part only		48
subject part only length		49
subject part read behind		-44
subject part reads		-44
subject part the		-36
subject part the length		-36
subject part to		26
subject part voltage		43
subject part was		40
subject part was length		40
subject person	-19
subject person #	-32	-13
subject person <q>		-80
subject person <q> length		-80
subject person <t>	-15
subject person a		-50
subject person a length		-49
subject person all	-17
subject person and		-29
subject person and length		-29
subject person are		-41
subject person are length		-41
subject person area		-42
subject person back		25
subject person back length		25
subject person be behind	-30	-24
subject person bring behind		24
subject person bring behind length		24
subject person by	-17	45
subject person by length		45
subject person count	-21
subject person count behind	-24
subject person cut		21
subject person cut behind	22
subject person cut length		21
subject person do behind	-19
subject person drill behind	-25	26
subject person drill behind length		26
subject person every		38
subject person every length		38
subject person figure behind		10
subject person find behind		19
subject person find behind length		16
subject person for	12
subject person get behind		13
subject person go behind	-30	-70
subject person got length		-9
subject person had	-24
subject person hang behind		-39
subject person hang behind length		-41
subject person have	61
subject person have behind	19	-48
subject person have behind length		-40
subject person in		31
subject person in length		40
subject person it		31
subject person it length		33
subject person left		-38
subject person left length		-38
subject person maybe		52
subject person measure behind	36	41
subject person measure behind length		29
subject person measured		11
subject person move behind	-32	30
subject person move behind length		30
subject person need behind		-37
subject person need behind length		-41
subject person null behind	-41
subject person of	-25
subject person out	-47
subject person percent		-28
subject person pick behind	-62
subject person plane behind		14
subject person plane behind length		14
subject person pull behind		19
subject person pull behind length		16
subject person put behind	20
subject person read behind	33
subject person run behind		-29
subject person sand behind	-20
subject person say behind	-35
subject person see	-23
subject person set behind		-34
subject person set behind length		-34
subject person take behind	-21	23
subject person take behind length		37
subject person tell behind	-41
subject person the	-26	-47
subject person the length		-46
subject person think behind		23
subject person to		26
subject person to length		60
subject person took		-21
subject person up		37
subject person up length		37
subject person voltage		49
subject person volume		-31
subject person want behind		11
subject person want behind length		29
subject person wants	32
subject person with	-19
subject pointer #	-33
subject pointer about	16
subject pointer all	-31
subject pointer and	-30	37
subject pointer and length		37
subject pointer are	-41	50
subject pointer are length		50
subject pointer at length		-10
subject pointer be	26	-24
subject pointer be ahead	-25
subject pointer be length		-26
subject pointer by	-27	25
subject pointer by length		25
subject pointer current		44
subject pointer get behind	-20
subject pointer good		16
subject pointer good length		16
subject pointer in		66
subject pointer in length		66
subject pointer is	-41
subject pointer is length		-15
subject pointer it's	6	37
subject pointer like length		24
subject pointer need behind	24
subject pointer null behind volume		45
subject pointer of	-21
subject pointer only	14	-25
subject pointer only length		-34
subject pointer other	-30
subject pointer out		34
subject pointer out length		34
subject pointer read behind	28
subject pointer say behind	26
subject pointer says	-32
subject pointer the	-18	27
subject pointer the length		32
subject pointer there's	-27
subject pointer there's length		24
subject pointer to		39
subject pointer to length		38
subject pointer under	-32
subject pointer up		18
subject pointer up length		18
subject pointer voltage		-50
subject pointer volume		41
subject pointer want behind	-36
subject pointer wants	-24
subject pointer with	-27
subject surface #	-32
subject surface about		-18
subject surface about length		-19
subject surface and		-31
subject surface and length		-31
subject surface angle		20
subject surface at	46
subject surface by		26
subject surface by length		26
subject surface go behind		26
subject surface go behind length		26
subject surface is	49
subject surface null behind angle		18
subject surface percent		39
subject surface read behind		56
subject surface was length		37
subject tells	-21
subject tells #	-14
subject tells be behind	-53	37
subject tells be behind length		33
subject tells say behind length		-26
subject tells want behind	-15
subject tool	-16
subject tool length		39
subject work	-56
sw # # percent		-23
sw # # pressure		21
sw # and	30	34
sw # and length		29
sw # deep	21	60
sw # deep length		60
sw # down		-29
sw # long		58
sw # long length		58
sw # more	-58
sw # of	-30
sw # of area		-27
sw # on	-65	41
sw # run		24
sw # run length		24
sw # thick		34
sw # thick length		34
sw # up		22
sw # up length		22
sw # wide		22
sw # wide length		22
sw CONJ #	-37	-15
sw CONJ # length		-15
sw CONJ at		19
sw CONJ at length		19
sw CONJ on		-21
sw CONJ on length		-21
sw COP deep		45
sw COP deep length		45
sw COP from		22
sw COP from length		22
sw COP off	-19
sw COP on		31
sw COP on length		31
sw COP short		36
sw COP short length		36
sw DET #	-35
sw DET and		-37
sw DET and length		-37
sw DET hole		24
sw DET hole length		24
sw DET in	-79
sw M( #		-29
sw M- #	-35
sw M@ # length		-12
sw NEG #	-48
sw PREP # angle		12
sw PREP # other		45
sw PREP # pressure		40
sw PREP # temperature		19
sw PREP <q>	-37	30
sw PREP <t>	-20
sw PREP all		-22
sw PREP centres		-28
sw PREP centres length		-28
sw PREP deep		-62
sw PREP deep length		-62
sw PREP down		33
sw PREP down length		33
sw PREP for	46	48
sw PREP for length		29
sw PREP from		33
sw PREP from length		33
sw PREP long		31
sw PREP long length		31
sw PREP no		-24
sw PREP of	-28	26
sw PREP of length		35
sw PREP off	28	-9
sw PREP off length		-9
sw PREP on		46
sw PREP on length		25
sw PREP short		-29
sw PREP short length		-33
sw PREP sides	-16
sw PREP square		-35
sw PREP square length		-35
sw PREP the		48
sw PREP the length		48
sw PREP to	45	52
sw PREP to length		52
sw PREP up		-35
sw PREP up length		-35
sw PREP where		43
sw PREP which		43
sw PREP which length		12
sw PREP wide		35
sw PREP wide length		35
sw PREP with length		-21
sw PRON #	-40
sw PRON # percent		27
sw PRON long		58
sw PRON long length		58
sw PRON of	-35
sw PRON to		48
sw PRON to length		39
sw Q0 #	-42
sw Vhaveb #	16
sw Vhavepp #	-29
sw Vmeasurei #	55
sw Vmeasures #	53	26
sw Vmeasures # length		19
sw Vmeasures # other		-28
sw Votherb # length		31
sw Votheri #	25
sw Vothers #		-17
sw Vothers # length		-17
sw Vsayb #		30
sw Vsayb # length		30
sw Vsays to	-39
sw Vworkb #	-21
sw Vworkb # length		35
sw Vworkbpp #		24
sw Vworkbpp # length		23
sw Vworki #		53
sw Vworkpp #	-36
sw Vworkpp holes	-24
sw Vworkpp in		-32
sw Vworkpp of	25	31
sw Vworkpp of length		36
sw tdefect #		37
sw tdefect # length		35
sw tdefect at		32
sw tdefect at length		32
sw tdefectVotherpp #		28
sw tdefectVotherpp # length		28
sw tfinish #	-41	-41
sw tfixture #		21
sw tfixture # length		20
sw tmaterial #		-24
sw tmaterial # length		-28
sw tmaterial <q>		-19
sw tmaterial <q> length		-19
sw tmaterial of	-28
sw tmaterialVworkb #	-59	-23
sw tmaterialVworkb # length		-23
sw tpart # length		-46
sw tpart's #		-28
sw tpart's # length		-28
sw tpartVworkb #		63
sw tsurface #	42
sw tsurface's #	44
sw tsurfaceVworkb #		27
sw tsurfaceVworkb # length		27
sw tsurfaceVworki #		32
sw w # temperature		-7
sw w <q>	70
sw w and		-54
sw w and length		-54
sw w at		47
sw w from		35
sw w from length		35
sw w in		-40
sw w in length		-24
sw w long		53
sw w long length		53
sw w of	-22
sw w off		36
sw w off length		36
sw w with		28
sw wly #	18	33
sw wly # length		31
system both														19
system both <26														19
system both one														20
system both whole														22
system both+									-21	33
system both+ one									-21	33
system both+ whole				-24					-21	35
system metric						20
system metric <100						67			-21
system metric <1000						82
system metric <115									-26		-21
system metric <12						54				29
system metric <2						-18
system metric <20				-23						-12
system metric <26				-26		-27
system metric <3						-26
system metric <3000						57											26
system metric <32						-27	30	58				53
system metric <40						47				45
system metric <400						37											42
system metric <5						-15
system metric <50				-21						68
system metric <600						57
system metric <72				-29		40			-31	52				54
system metric <8																26
system metric <85				-18		43	58
system metric decimal				-19		-41		60				-16				30
system metric one						20
system metric pair2				-24
system metric whole						24
system none <0.1				50					-22									36
system none <100				-20		-9			69		-16
system none <1000						68
system none <115									23
system none <12												29
system none <130													70
system none <16				41								21
system none <160						45			36
system none <20				-11
system none <200						61			45		36
system none <26												38
system none <260													25							-14
system none <3000						84
system none <32											-30				22						55
system none <40				35		39				31
system none <400									35				23
system none <50				41		-15			51						13
system none <60																			26	20
system none <600						80
system none <72				29					35											18
system none <8				22
system none <85						-12			46
system none decimal														39
system none pair2				85
system us <0.1				40											-31
system us <0.6				45														37
system us <1				-10														42
system us <100					25						45
system us <1000				-28		-64
system us <115									35				34		29
system us <130									71				44
system us <160									63		-18									19
system us <20				63								25
system us <26				59									20
system us <260				-12		-19							45		-28					33
system us <3000				-30		-63
system us <32				48
system us <40				37
system us <400						23									35					27		-31
system us <50				40
system us <60				48					31	-12
system us <600				-24		-44									-34							65
system us <72				34					37						31					20
system us <85				50								32
system us decimal									-22				41					43	22
system us half									-29		48
system us pair1					30
system us pair2				34
topic airflow	-33											-15
topic airflow <2														33
topic airflow <3		-96
topic airflow <5		-13
topic airflow <5 length		-18
topic airflow <8 length		-50
topic airflow <85		31
topic airflow none				46
topic airflow us												-21										21
topic airflow whole												-15
topic angle											40
topic angle <1		33
topic angle <1 length		33
topic angle <12		-28
topic angle <12 length		-28
topic angle <16		36
topic angle <16 length		36
topic angle <2	-32
topic angle <3	-43
topic angle <5		26										29
topic angle <5 length		25
topic angle <50		31									40
topic angle <8		46
topic angle <8 length		24
topic angle metric											21
topic angle none						38
topic angle us											42
topic angle whole											39
topic current		28											32	64
topic current <12													30	39
topic current <3	-29
topic current <5														15
topic current decimal													23	88
topic current none														41
topic current us													43	50								-26
topic current whole													28	28
topic draft					21					13					19			69
topic draft <1																		46
topic draft <26	-52
topic draft <5		-58
topic draft <5 length		-58
topic draft <8 length		-38
topic draft decimal									-25									107
topic draft none																		70
topic draft pressure		36
topic draft us					35										30			33
topic draft whole					32				43	23					32							-31
topic heat									55	26
topic heat <100	46								77
topic heat <115									59
topic heat <12		-29							9	57	-26
topic heat <12 length		-65
topic heat <130									67
topic heat <16 length		-29
topic heat <160	23	31							36
topic heat <2	-76	14							-40
topic heat <2 length		34
topic heat <20	50	48		-27					66	44		-23			35
topic heat <26		-85											68									-29
topic heat <3	-48								-29
topic heat <3000	-22					25
topic heat <40									27	22
topic heat <5	-40	30							-46	-22	46
topic heat <5 length		34
topic heat <50									-48	87	-16
topic heat <60	33			-22					48	25									45
topic heat <72	37	45							57	47
topic heat <8	-47	27							-25
topic heat <8 length		26
topic heat <85									61
topic heat decimal				-15					-36				67			27						-29
topic heat metric						18			-49	101
topic heat none						-15			95	-22
topic heat pressure		26
topic heat temperature		68
topic heat us				-13					63				21
topic heat volume		-31
topic heat whole									60	29
topic light				20
topic light <2	-40
topic light none				21
topic light whole				20
topic moisture												59
topic moisture <1		-25
topic moisture <1 length		-25
topic moisture <12 length		-12
topic moisture <12 percent		35
topic moisture <16 length		-33
topic moisture <16 percent		34
topic moisture <2	-58											-40
topic moisture <20		16							-19			34
topic moisture <26 percent		34
topic moisture <3	-49	-20		-27
topic moisture <32						-23						86
topic moisture <5	-46	43										22
topic moisture <5 length		42
topic moisture <60		7
topic moisture <72	27	30
topic moisture <72 percent		22
topic moisture <8	-46
topic moisture <85		27
topic moisture metric						-21						31					30
topic moisture none												61
topic moisture percent		45
topic moisture us									-22			42	29
topic moisture whole												54
topic none	-29
topic none <0.1	-66	42																-12
topic none <0.6				42														32
topic none <0.6 slope		30
topic none <1	-43	-17		-9								-17		-13				28
topic none <1 length		-18
topic none <100	-27			-7					45
topic none <100 length		-17
topic none <1000						70
topic none <1000 length		-22
topic none <115									23		-28
topic none <12	-29
topic none <12 current		-44
topic none <12 percent		-17
topic none <12 voltage		-36
topic none <130				19		-24			23				14
topic none <130 length		-54
topic none <130 voltage		14
topic none <16	-31
topic none <16 percent		25
topic none <160		25				49
topic none <2	-34	-21
topic none <2 volume		-23
topic none <20 length		-16
topic none <20 percent		26
topic none <200		28
topic none <26				27
topic none <26 percent		32
topic none <260		31		-14		24			-13				-24							22
topic none <3	-33
topic none <3000		39		-22		65
topic none <32 length		27
topic none <40		18		28
topic none <400	-24																21
topic none <400 length		-25
topic none <5	-27	-17
topic none <5 area		-21
topic none <5 current		-41
topic none <50									32
topic none <50 length		-27
topic none <60	39			48											22
topic none <600		68		-21		29																42
topic none <72	18			30					21											35
topic none <72 percent		-36
topic none <72 weight		44
topic none <8	-32	-14
topic none <8 area		20
topic none <85				34		-19	15					30
topic none both									18					21			17
topic none both+						34
topic none decimal													-22
topic none huge		-20
topic none metric						22
topic none percent		-6
topic none slope		-13
topic none temperature		-33
topic none weight		-35
topic of current	-37													66
topic of heat	27								61	45
topic of heat <60									20	39
topic of heat none									66	-20
topic of heat us				-14					55	29
topic of heat whole									61	45
topic of moisture	11	-12		-22					-23			96
topic of moisture <72		15
topic of moisture <72 percent		15
topic of moisture none												44
topic of moisture percent		42
topic of moisture us				-27					-29			96
topic of moisture whole				-21					-24			85
topic of pressure	29			-22											60	18	47
topic of pressure length		-43
topic of pressure metric						-34									-34	17	84
topic of pressure pressure		29
topic of pressure us				-26											52	19
topic of pressure whole				-22											60	18	47
topic of voltage													42
topic of voltage none													39
topic of voltage whole													42
topic ohms				28															63
topic ohms <3		25
topic ohms decimal				-13															79
topic ohms none				28									-26						45
topic ohms us									27									-32	50
topic ohms whole				36															26
topic place	-23
topic place <0.6		-8
topic place <0.6 length		-12
topic place <1 length		-21
topic place <12		-32										19
topic place <12 length		-28
topic place <16	-27	-36
topic place <16 length		-36
topic place <160									66
topic place <2	-29
topic place <20	40			79
topic place <26		71
topic place <26 length		56
topic place <3	-22
topic place <32 length		58
topic place <40		61
topic place <40 length		54
topic place <5	-26	-13
topic place <50		72
topic place <50 length		69
topic place <72	13	26		-22					73			31
topic place <8	-36
topic place <8 length		45
topic place <85		26
topic place <85 length		17
topic place area		43
topic place metric						-25		43				-23
topic place none									32
topic place percent		31
topic pressure		20													32	21
topic pressure <0.6		25
topic pressure <0.6 length		12
topic pressure <100		16
topic pressure <12															33
topic pressure <16		-35
topic pressure <16 length		-44
topic pressure <2	-46
topic pressure <26		-28
topic pressure <3	-71								-28						-22
topic pressure <5	-35															40
topic pressure <50	12									61					28
topic pressure <8	25	36														84
topic pressure <8 length		31
topic pressure decimal									-26				31			37		58
topic pressure length		-18
topic pressure metric										37					-25	59	59
topic pressure none															52
topic pressure pressure		38
topic pressure us															42
topic pressure weight		15
topic pressure whole															37
topic space <0.1		35
topic space <0.1 length		35
topic space <1		29
topic space <1 length		29
topic space <100	12			26		39			18
topic space <100 length		-16
topic space <1000	8					77
topic space <115	-42			-16		48
topic space <12				34
topic space <130		39		-13					33				33
topic space <130 length		39
topic space <16				38
topic space <160	-17
topic space <160 length		-16
topic space <2	-33
topic space <20	26			43	-17				27				32
topic space <20 length		42
topic space <200						33					28
topic space <26	20			80
topic space <260		-49				37							65		-28
topic space <3	-46
topic space <3000	32					63
topic space <32	30			37					-23						29						27
topic space <40	12			59
topic space <400	45					84											16
topic space <5	-35
topic space <5 length		28
topic space <50		28		32	30										29							-26
topic space <50 length		30
topic space <60	19	45		38															39
topic space <60 length		45
topic space <600	29	37				82
topic space <600 length		31
topic space <72	-38	38		41					-28
topic space <72 length		38
topic space <8	-33	36		-12	21
topic space <8 length		38
topic space <85		47		34		44
topic space <85 length		44
topic space angle		-21
topic space area		-10
topic space both				12		37
topic space both+				-26
topic space decimal				38		-48		89					30						-18
topic space metric						41
topic space none				21		41
topic space percent		34
topic space temperature		-17
topic space us				22
topic space voltage		53
topic space volume		-26
topic space weight		-27
topic torque	-33	-18
topic torque length		-26
topic torque metric						-29
topic torque none									31
topic voltage													19
topic voltage <1		-22
topic voltage <1 length		-22
topic voltage <100		66
topic voltage <1000	-28
topic voltage <115		48
topic voltage <12	-37	-17
topic voltage <12 length		-29
topic voltage <12 percent		27
topic voltage <130	47												96
topic voltage <16		-16
topic voltage <16 length		-57
topic voltage <2	-47
topic voltage <2 length		28
topic voltage <20	-17								-18			29
topic voltage <26		59		37								29
topic voltage <260		52
topic voltage <3	-31	-23
topic voltage <3000	33					21											39
topic voltage <5	-39	-27
topic voltage <50		26
topic voltage <50 length		27
topic voltage <60		47
topic voltage <60 length		36
topic voltage <8	-47
topic voltage decimal				30									43
topic voltage metric												22
topic voltage none									23				24
topic voltage percent		34
topic voltage us													27
topic voltage voltage		39
topic voltage weight		25
topic voltage whole													16
topic weight	-66												36		-28							18
topic weight length		-30
topic weight none													31
topic weight us													24		-36							27
topic weight weight		32
topic weight whole															-29							22
topic- airflow		-9																		25
topic- airflow <16		68
topic- airflow <16 length		58
topic- airflow <2		21
topic- airflow <5		-58		-17	30
topic- airflow <5 length		-58
topic- airflow <8	-34	18		24
topic- airflow decimal														31
topic- airflow length		-22
topic- airflow us				-17																33
topic- airflow whole																				29
topic- angle											43
topic- angle <0.6		56
topic- angle <0.6 length		58
topic- angle <2		15
topic- angle <3		35
topic- angle <3 length		35
topic- angle us											52
topic- angle whole				-36							44
topic- current	27	25											36	56
topic- current <8	-60
topic- current length		-31
topic- current none													51	7
topic- current us														38
topic- current whole													45	37
topic- draft																		19
topic- draft <8	-24
topic- draft length		-42
topic- draft none				-26
topic- draft us																		24
topic- heat									22
topic- heat <0.6 length		-18
topic- heat <12	-38	38
topic- heat <12 length		25
topic- heat <16	40				37														63
topic- heat <2	30	-11		16	37
topic- heat <2 length		-22
topic- heat <3	-46								-28
topic- heat <32	-14			-21											-30
topic- heat <40		-29								39
topic- heat <5		40		28																	30
topic- heat <60				-20						59
topic- heat <72	35	31		-21					33
topic- heat <8		-53
topic- heat <85	32								36
topic- heat decimal				-15														66	61		26
topic- heat metric										45						30
topic- heat none									45	29
topic- heat pressure		54
topic- heat us									20
topic- heat whole									26
topic- light		43		24										19
topic- light <3														40
topic- light length		45
topic- light metric						30
topic- light none						-25							38	32
topic- light us				38
topic- light whole				25									27
topic- moisture		24										24
topic- moisture <12	48											75
topic- moisture <12 length		-88
topic- moisture <12 percent		59
topic- moisture <16	40			32								43
topic- moisture <5		-51
topic- moisture <72		40
topic- moisture <8		65
topic- moisture none				20
topic- moisture percent		68
topic- moisture us												31
topic- moisture whole												25
topic- of current														31
topic- of current none														36
topic- of current whole													20
topic- of heat												22
topic- of heat <72									-20			30
topic- of heat us												26
topic- of heat whole												22
topic- of moisture		51										29
topic- of moisture none												22
topic- of moisture percent		66
topic- of moisture us												17
topic- of moisture whole												29
topic- of pressure	12	-32													39
topic- of pressure length		-56
topic- of pressure metric																25
topic- of pressure us														26	45
topic- of pressure whole															42
topic- of voltage	-40
topic- ohms																			24
topic- ohms <0.6		-22
topic- ohms decimal																			35
topic- ohms metric																43
topic- ohms other		-23
topic- ohms us									-28										27
topic- ohms whole																20
topic- place <0.1		34
topic- place <0.1 length		34
topic- place <1		-43
topic- place <1 length		-37
topic- place <100 length		23
topic- place <12	-40	-27		-15								35
topic- place <12 length		-31
topic- place <16		13		27								27
topic- place <2	-35	27
topic- place <2 length		33
topic- place <20	52	55		97	-27
topic- place <20 length		56
topic- place <26	-23	59
topic- place <26 length		59
topic- place <3	-33	56
topic- place <3 length		56
topic- place <3000	29					46
topic- place <32		21
topic- place <32 length		23
topic- place <40	31	-58		47		-10				-22	55
topic- place <40 length		-47
topic- place <5					20
topic- place <50	27	57									26											34
topic- place <50 length		50
topic- place <72												32
topic- place <72 length		52
topic- place <8	-18	-23		-14												20
topic- place <8 length		-17
topic- place <85	30	-30
topic- place area		-15
topic- place length		27
topic- place metric						32
topic- place percent		-91
topic- pressure <12		21
topic- pressure <16	20														38
topic- pressure <2	-27														-30
topic- pressure <2 length		30
topic- pressure <20	14
topic- pressure <5																		49
topic- pressure <72	-35								-22
topic- pressure <8	-21	78																24
topic- pressure decimal																28		63
topic- pressure length		-33
topic- pressure metric										35						38
topic- pressure none				42						35
topic- pressure pressure		33
topic- pressure us				-21														24
topic- pressure weight		-52
topic- space <0.6		33
topic- space <0.6 length		33
topic- space <1		38
topic- space <1 length		38
topic- space <100				47
topic- space <1000	-30
topic- space <115	-25
topic- space <12				44
topic- space <16	24	-16		54															22
topic- space <2	-35
topic- space <20		57										33
topic- space <20 length		54
topic- space <26	-61	66		-44
topic- space <26 length		56
topic- space <3 length		26
topic- space <32	40	-13		48	16							21
topic- space <40	25	27				60
topic- space <40 length		27
topic- space <50	-30
topic- space <60	56	-39		19
topic- space <60 length		-52
topic- space <600						29
topic- space <72		-9								21
topic- space <8		-8			24
topic- space <85	-16	11		27		-18			46
topic- space angle		-47
topic- space area		-18
topic- space both						25			50
topic- space decimal				-23										59					26
topic- space metric						16
topic- torque	45	42		-16
topic- voltage													24
topic- voltage <12	38											68	29
topic- voltage <12 length		-58
topic- voltage <16	28			35	47
topic- voltage <16 length		-47
topic- voltage <2	-34	-33
topic- voltage <2 length		-34
topic- voltage <20		24											52
topic- voltage <26	-47	33
topic- voltage <3	-56	-8							-31
topic- voltage <3 length		-8
topic- voltage <32		-15
topic- voltage <40	19	45		13		35				20
topic- voltage <400		17
topic- voltage <5		-56		31
topic- voltage <5 length		33
topic- voltage <72		45
topic- voltage area		-55
topic- voltage none													25
topic- voltage other		32
topic- voltage percent		42
topic- voltage voltage		-57
topic- weight	-39	48																				17
topic- weight length		73
topic- weight us																						22
topic- weight whole																						17
topic-- airflow	15																			33
topic-- airflow <8	-43																			-19
topic-- airflow whole																				36
topic-- angle									19
topic-- angle <12		45
topic-- angle <12 length		45
topic-- angle none													38
topic-- angle us				50					29		21
topic-- angle whole									19
topic-- current													34
topic-- current length		44
topic-- current none													49
topic-- draft	28	-30								33
topic-- draft <2	-9
topic-- draft length		-42
topic-- draft us									-24	39
topic-- draft whole										34
topic-- heat <12		-45
topic-- heat <16	25	-33								28					25				43
topic-- heat <2	-28	-16		-20
topic-- heat <2 length		-14
topic-- heat <3	-29	-38
topic-- heat <3 length		-16
topic-- heat <32		24
topic-- heat <32 length		24
topic-- heat <5	-24	24
topic-- heat <5 length		24
topic-- heat <8				-10																	21
topic-- heat <8 length		-36
topic-- heat decimal				-20										-13				-23	32		49
topic-- heat none				-21						21
topic-- heat us															25
topic-- light									30
topic-- light <8 length		23
topic-- light whole									30
topic-- moisture		27										20
topic-- moisture <12		-26
topic-- moisture <12 length		-26
topic-- moisture <2	-21	-17
topic-- moisture <20				-26								-23
topic-- moisture <3				33
topic-- moisture <5	-40	37
topic-- moisture <5 length		38
topic-- moisture none				-20								41
topic-- moisture percent		46
topic-- moisture us															34
topic-- moisture whole				-19								23
topic-- of moisture		27										19
topic-- of moisture whole												19
topic-- of pressure	34	26													54		33
topic-- of pressure length		25
topic-- of pressure us															53
topic-- of pressure whole															46		37
topic-- ohms		35							31										19
topic-- ohms none				38					43
topic-- ohms us				-13															20
topic-- ohms whole									35
topic-- place <1		25
topic-- place <1 length		25
topic-- place <12	7	22		27
topic-- place <12 length		27
topic-- place <16	23	46		51
topic-- place <16 length		30
topic-- place <2	-45	48
topic-- place <2 length		66
topic-- place <26		-35
topic-- place <26 length		-32
topic-- place <3	-38
topic-- place <32		26								24
topic-- place <40	-35
topic-- place <5				28
topic-- place <60		32
topic-- place <8															-18							17
topic-- place area		55
topic-- place decimal				-17								30
topic-- place metric						41
topic-- place none											15
topic-- place percent		41
topic-- place temperature		57
topic-- place us				28
topic-- place whole				23
topic-- pressure	22	37
topic-- pressure <2									-23
topic-- pressure <3		-20
topic-- pressure <5	-27
topic-- pressure <8	45	-12		45											23
topic-- pressure decimal				-10				-20						-15	10			-23	-16
topic-- pressure length		41
topic-- pressure metric																	37
topic-- pressure us				33					37						37
topic-- pressure whole									21
topic-- space <1		49
topic-- space <1 length		49
topic-- space <1000						39
topic-- space <12	22					18						67
topic-- space <130	-17
topic-- space <16		-23													18
topic-- space <16 length		42
topic-- space <2		-45
topic-- space <2 length		-46
topic-- space <20		56
topic-- space <26	-43	35
topic-- space <26 length		35
topic-- space <3	-18	-35
topic-- space <3 length		13
topic-- space <32	-24	51
topic-- space <32 length		32
topic-- space <5					25
topic-- space <50	42	-34		67
topic-- space <60									60
topic-- space <72				48											-13
topic-- space <8	-36			-11										20
topic-- space decimal				36				-21				61	-19	33				-23
topic-- space none												41
topic-- space pressure		54
topic-- torque		-24
topic-- voltage	6
topic-- voltage <1		-42
topic-- voltage <1 length		-51
topic-- voltage <12	-29								27
topic-- voltage <16	55			31								19		30	44
topic-- voltage <16 length		16
topic-- voltage <2		-40		-19	45
topic-- voltage <2 length		-39
topic-- voltage <20	16											-31
topic-- voltage <26	40	29		53
topic-- voltage <3	-20
topic-- voltage <40	18									34
topic-- voltage <5	-26	50										25
topic-- voltage <5 length		31
topic-- voltage <50	25			-51							67
topic-- voltage metric						-30
topic-- voltage none				-24						21
topic-- voltage us											26
topic-- weight	-37					-21								23
topic-- weight whole						-22
topics 	-29
topics  <0.1	-66	42																-12
topics  <0.6				42														32
topics  <0.6 slope		30
topics  <1	-43	-17		-9								-17		-13				28
topics  <1 length		-18
topics  <100	-27			-7					45
topics  <100 length		-17
topics  <1000						70
topics  <1000 length		-22
topics  <115									23		-28
topics  <12	-29
topics  <12 current		-44
topics  <12 percent		-17
topics  <12 voltage		-36
topics  <130				19		-24			23				14
topics  <130 length		-54
topics  <130 voltage		14
topics  <16	-31
topics  <16 percent		25
topics  <160		25				49
topics  <2	-34	-21
topics  <2 volume		-23
topics  <20 length		-16
topics  <20 percent		26
topics  <200		28
topics  <26				27
topics  <26 percent		32
topics  <260		31		-14		24			-13				-24							22
topics  <3	-33
topics  <3000		39		-22		65
topics  <32 length		27
topics  <40		18		28
topics  <400	-24																21
topics  <400 length		-25
topics  <5	-27	-17
topics  <5 area		-21
topics  <5 current		-41
topics  <50									32
topics  <50 length		-27
topics  <60	39			48											22
topics  <600		68		-21		29																42
topics  <72	18			30					21											35
topics  <72 percent		-36
topics  <72 weight		44
topics  <8	-32	-14
topics  <8 area		20
topics  <85				34		-19	15					30
topics  huge		-20
topics  percent		-6
topics  slope		-13
topics  temperature		-33
topics  weight		-35
topics airflow	-41			-14					-17			-23								28
topics airflow length		-16
topics angle	-34	43									54
topics angle <12		-38
topics angle <12 length		-38
topics angle <2	-21
topics angle <3	-42
topics angle <5		21
topics angle <5 length		21
topics angle space	15					30
topics angle space <0.6		29
topics angle space <0.6 length		29
topics current		-17											26	30
topics current current		-21
topics draft	-35																	63
topics draft <26	-44
topics draft airflow length		-8
topics draft space		-35
topics draft space length		-41
topics heat				-19					75	29			26
topics heat <2	-44
topics heat <5		59
topics heat <5 length		57
topics heat <72	31			-31					58	51
topics heat angle		26
topics heat ohms other		44
topics heat place		23							38
topics heat place length		49
topics heat space	18			70					-28
topics heat space <5		-37
topics heat space place		-25
topics heat space place length		-25
topics heat temperature		67
topics heat voltage						24			16				-16
topics heat voltage length		-14
topics heat voltage space	17	22							26	19
topics heat voltage space length		22
topics light		64
topics light <2	-30
topics light space		38
topics light space length		38
topics moisture	-81	-26		-19
topics moisture length		-39
topics moisture percent		33
topics moisture place	-27
topics moisture place length		42
topics moisture space		50		23								-20			41							-39
topics moisture space place		19
topics moisture space place length		16
topics moisture voltage	11			-26		-22						105
topics moisture voltage <12		58
topics of current current				-18										90
topics of heat heat	24								33	58
topics of moisture moisture	12			-21					-27			80
topics of moisture moisture <72		14
topics of moisture moisture <72 percent		14
topics of moisture moisture percent		41
topics of pressure pressure	27	-12							-18						45	30	39
topics of pressure pressure length		-34
topics of voltage voltage													33
topics ohms	-73								-24										37
topics place	-27								22
topics place <12	19											23
topics place <2	-16
topics place <3	-18	-39
topics place <5	-26	-37
topics place <5 length		-23
topics place <8	-22	46
topics place <8 length		46
topics pressure	-14								18							44
topics pressure <2	-31
topics pressure <8		29
topics pressure draft	12				55													40
topics pressure draft pressure		24
topics pressure length		-31
topics pressure space		46
topics pressure space length		46
topics space <0.1		37
topics space <0.1 length		37
topics space <1		29
topics space <1 length		29
topics space <100				32		45			-36
topics space <1000						51
topics space <115	-43			-16		49
topics space <12		21		25										18
topics space <12 length		30
topics space <16		36		42	18
topics space <16 length		29
topics space <160		-32
topics space <160 length		-32
topics space <2	-32							18
topics space <20	23	-18		52	-18				-20		-22		35
topics space <200	17					45					31
topics space <26				61		-20
topics space <260		-41		-13		43							64
topics space <3	-44			-17				23
topics space <3000	32					63
topics space <32	25			36	30				-18	21	-25				36						32
topics space <32 length		-7
topics space <40	11			58
topics space <400	45					84											16
topics space <5	-28
topics space <5 length		36
topics space <50		23		-14	38										11
topics space <50 length		26
topics space <60				40		29
topics space <600	29	32				82
topics space <600 length		32
topics space <72	-56	41
topics space <72 length		42
topics space <8	-31			-13	24
topics space <85	55	45		74		53
topics space <85 length		45
topics space area		-19
topics space place	-18
topics space place <12		-14
topics space place <12 length		-14
topics space place <2		35
topics space place <2 length		35
topics space place <5	-16
topics space volume		-25
topics space weight		45
topics torque	-16
topics torque space	-46					-25
topics torque torque		52
topics voltage	-37	36											30
topics voltage <0.6		24
topics voltage <0.6 length		24
topics voltage <12	-27
topics voltage <130	41												83
topics voltage <2	-21
topics voltage <3	-28
topics voltage <5	-26	9
topics voltage <5 length		62
topics voltage <8	-27
topics voltage <8 length		-8
topics voltage length		31
topics voltage space	33	35		56
topics voltage space <0.6		39
topics voltage space <0.6 length		38
topics voltage space <12		-16
topics voltage space <12 length		-27
topics voltage space <3	-16
topics voltage space <8		35
topics voltage space <8 length		35
topics voltage space length		25
topics weight	-28														-27							28
topics weight weight		46
unit A		-34
unit C		-6
unit F		23
unit L		-68
unit bar		-26
unit cfm		62
unit cm		69
unit ft		-17
unit gal		-48
unit gpm		61
unit in wc		-81
unit in-lb		58
unit kg		43
unit mA		77
unit mm		32
unit ohm		56
unit psi		64
unit sq ft		33
unit sq m		81
unit square		-121
use buy whole	-42	-63
use buy whole length		-32
use have whole		-28
use measure decimal	-26	13
use measure half		25
use measure half length		24
use measure whole		31
use measure whole length		35
use measure whole percent		35
use measure whole weight		-12
use move quarter		28
use move quarter length		24
use move whole		31
use move whole length		29
use need decimal	-49
use need whole	-15	-27
use need whole length		-22
use null decimal	12
use null decimal area		25
use null decimal current		33
use null decimal length		-8
use null quarter slope		22
use null whole area		26
use null whole flow		32
use null whole other		10
use null whole temperature		22
use null whole voltage		-25
use null whole volume		28
use other decimal		37
use other decimal length		29
use other half		21
use other half length		22
use other whole	-16
use other whole area		29
use other whole current		-49
use other whole flow		-44
use other whole temperature		-25
use other whole voltage		-23
use other whole weight		-30
use say fine		44
use say fine length		44
use say half		-18
use say half length		-18
use say quarter		31
use say quarter length		31
use say whole	-28
use see whole	-51	52
use see whole length		45
use use whole	-24	-32
use work decimal	49	37
use work decimal length		37
use work quarter slope		28
use work whole	-20
use work whole area		-15
use work whole percent		-28
use work whole pressure		-35
use work whole torque		32
use work whole volume		-21
verb # # other		25
verb # # voltage		33
verb # -	-24
verb # <q>	-35	-60
verb # <t>		-32
verb # and	13	26
verb # and length		27
verb # area		27
verb # at length		-33
verb # cut		21
verb # cut length		19
verb # decimal	8
verb # decimal current		34
verb # decimal length		-14
verb # flow		36
verb # hole		51
verb # hole length		51
verb # in	8
verb # not	-34
verb # of	-23
verb # on	-25
verb # open		-18
verb # open length		-18
verb # out		26
verb # out length		26
verb # over		53
verb # over length		53
verb # percent		26
verb # pressure		32
verb # read		-7
verb # short		-7
verb # short length		-7
verb # slope		33
verb # temperature		20
verb # the	-14	-31
verb # the length		-31
verb # whole area		23
verb # whole flow		24
verb # whole other		22
verb # whole percent		23
verb # whole temperature		20
verb # whole weight		-31
verb # with	-17
verb # within		27
verb # within length		27
verb # x		-20
verb ask behind																				24
verb be ahead	-16	-22
verb be ahead #	-19	-27
verb be ahead length		-12
verb be ahead whole	-16
verb be ahead whole length		16
verb be behind a	-61	20
verb be behind all	-20
verb be behind at	61
verb be behind at length		37
verb be behind be	-29
verb be behind by		30
verb be behind by length		22
verb be behind decimal		28
verb be behind decimal length		26
verb be behind fine		37
verb be behind fine length		37
verb be behind flow		-25
verb be behind half		27
verb be behind half length		26
verb be behind is	18
verb be behind is percent		24
verb be behind on	-26
verb be behind only		20
verb be behind out		-10
verb be behind over		-45
verb be behind over length		-45
verb be behind pressure		31
verb be behind to	-48	-38
verb be behind with	22
verb blow behind															44							-46
verb bow behind		22
verb bow behind length		22
verb bring behind	-19	-27												29
verb bring behind whole	-24	-44
verb buy behind		-57
verb buy behind length		-29
verb call behind	-9	42
verb call behind length		40
verb call behind whole	-18
verb change behind		-35
verb change behind length		-35
verb check behind																						-33
verb clean behind															-29							11
verb come behind	-18			-17										38	-18							16
verb come behind whole length		30
verb count behind	-24
verb count behind count	-21
verb count behind whole	-24
verb cover behind		-18
verb cover behind length		-18
verb cut behind	22					20	31
verb cut behind at		27
verb cut behind at length		28
verb cut behind cut	-20	26
verb cut behind cut length		26
verb cut behind length		26
verb cut behind to		33
verb cut behind to length		33
verb cut behind whole	22	12
verb cut behind whole length		15
verb do ahead	-18
verb do ahead whole	-18
verb do behind	-24
verb do behind whole	-24
verb do behind whole length		12
verb drill behind	-31	38		-10
verb drill behind length		38
verb drill behind quarter		29
verb drill behind quarter length		29
verb drill behind whole	-31	23
verb drill behind whole length		23
verb drop behind		32		22
verb figure behind		43
verb figure behind whole		55
verb find behind	26
verb find behind whole	26	-43
verb finish behind	-22	-13		-9
verb finish behind length		27
verb finish behind whole	-22
verb get ahead		28
verb get behind									21
verb get behind at		33
verb get behind half		-31
verb get behind half length		-29
verb get behind of	-20
verb get behind quarter		20
verb get behind quarter length		20
verb give behind	18	-58												54
verb give behind length		-62
verb give behind whole	18	-36
verb go ahead	-28
verb go ahead whole	-28
verb go behind				39
verb go behind length		26
verb grab behind	-25
verb grab behind whole	-24
verb hang behind		25		30
verb hang behind half		25
verb hang behind half length		25
verb hang behind length		27
verb hang behind quarter		21
verb hang behind quarter length		21
verb hang behind whole		44
verb hang behind whole length		48
verb have ahead	-25
verb have ahead #	-26
verb have ahead whole	-25
verb have behind				26
verb have behind had	-22
verb have behind have	17	23
verb have behind have length		19
verb have behind whole		-22
verb hit behind	-13	42							41
verb hit behind length		41
verb hit behind whole	-13	30
verb hit behind whole length		27
verb hold behind		40																				-34
verb hold behind held		24
verb hold behind length		28
verb hold behind whole		28
verb keep behind						23
verb land behind		32
verb land behind length		31
verb lay behind	-30											-21
verb lay behind length		-29
verb lay behind whole	-30
verb leave ahead		-22
verb leave ahead length		-19
verb leave ahead whole		-27
verb leave behind		10
verb leave behind left		-39
verb leave behind left length		-39
verb leave behind whole		40
verb leave behind whole length		37
verb lift behind															-20							21
verb make behind									25
verb measure behind		35
verb measure behind decimal		30
verb measure behind fine		37
verb measure behind fine length		37
verb measure behind half		21
verb measure behind half length		21
verb measure behind length		24
verb measure behind measured		26
verb measure behind quarter		-25
verb measure behind quarter length		-25
verb measure behind whole		42
verb measure behind whole length		26
verb move behind	-6	42				31
verb move behind length		37
verb move behind whole	-6	30
verb move behind whole length		22
verb must behind				46			26
verb nail behind	27			46
verb nail behind whole	27
verb need ahead	-34
verb need ahead whole	-34
verb need behind	-30	-15
verb need behind half		-23
verb need behind half length		-27
verb need behind length		-22
verb need behind need		-10
verb need behind need length		-10
verb need behind needs		55
verb need behind needs length		36
verb need behind of		-29
verb need behind of length		-29
verb need behind whole	-37	-22
verb need behind whole length		-31
verb null ahead	-34
verb null ahead #	-29
verb null ahead whole	-32
verb null behind a	-19
verb null behind about		22
verb null behind about length		31
verb null behind all	-28
verb null behind and	-41	40
verb null behind and length		40
verb null behind at	17	22
verb null behind by	23	32
verb null behind by length		32
verb null behind decimal	31	53
verb null behind down		26
verb null behind good		24
verb null behind good length		24
verb null behind got	-53
verb null behind in		-33
verb null behind in length		-33
verb null behind it		48
verb null behind it length		48
verb null behind it's	9
verb null behind maybe		-41
verb null behind maybe length		-41
verb null behind of		-8
verb null behind of length		-8
verb null behind on		53
verb null behind only	35
verb null behind percent		-8
verb null behind pressure		-61
verb null behind the	-22	-37
verb null behind the length		-28
verb null behind there's	-27
verb null behind there's length		24
verb null behind to		41
verb null behind to length		24
verb null behind weight		7
verb null behind whole percent		-11
verb null behind whole pressure		-45
verb null behind whole weight		7
verb open behind whole		53
verb open behind whole length		53
verb order behind	-33	-46
verb order behind length		-43
verb order behind whole	-33	-39
verb patch behind	-17
verb patch behind whole	-17
verb pick behind	-64			-16		-43
verb pick behind whole	-64
verb pitch behind length		32
verb plane behind		20
verb plane behind length		20
verb pour behind		-14
verb pour behind length		-14
verb prime behind	-43
verb prime behind whole	-43
verb pull behind	-21	33		-16
verb pull behind length		17
verb pull behind whole	-21	34
verb pull behind whole length		16
verb put behind				27											53
verb put behind whole		21
verb put behind whole length		7
verb raise behind		42
verb raise behind length		43
verb raise behind whole		43
verb rate behind																					23
verb read behind	37			-23					31	-30		32			41				40
verb read behind other		-20
verb read behind reads	26
verb read behind reads other		-20
verb read behind whole	31
verb replace behind		-66
verb replace behind length		-66
verb rip behind		42
verb rip behind fine		35
verb rip behind fine length		35
verb rip behind length		42
verb rip behind to		26
verb rip behind to length		26
verb run behind									28												27
verb run behind whole length		20
verb sag behind		30
verb sag behind length		29
verb sand behind	-41
verb sand behind whole	-41
verb say behind												22
verb say behind length		-18
verb say behind said	17
verb say behind say	-33	29
verb say behind whole length		-32
verb screw behind				26
verb see behind	-23	28
verb see behind length		28
verb see behind whole	-23
verb send behind		-15
verb send behind length		-15
verb send behind whole		-45
verb send behind whole length		-45
verb set behind	35	-12								55					37
verb set behind at		-22
verb set behind at length		-37
verb set behind length		-23
verb set behind to	26
verb set behind whole	34	-29
verb set behind whole length		-42
verb shim behind		31
verb shim behind fine		18
verb shim behind fine length		18
verb shim behind length		31
verb should behind	24																	44
verb should behind be	36
verb sit behind		27														26
verb sit behind length		28
verb sit behind whole	-10	25
verb sit behind whole length		25
verb stick behind		48
verb stick behind length		48
verb stick behind out		27
verb stick behind out length		27
verb stick behind whole		20
verb strip ahead	-17
verb strip ahead whole	-17
verb supposed behind					45										-37
verb swap behind	-42	-61		-24
verb swap behind length		-45
verb swap behind whole	-33	-55
verb take behind	-28	-13
verb take behind length		-21
verb take behind took	-27
verb take behind whole	-28	-37
verb take behind whole length		-52
verb tape behind	36			41
verb tape behind whole	36
verb test behind	43	-23		-20									31			53				31	29
verb test behind whole	39	-23
verb think behind		23
verb torque behind		33
verb torque behind torque		33
verb trim behind		52
verb trim behind fine		29
verb trim behind fine length		29
verb trim behind length		52
verb turn behind											67
verb use behind	-33	-32
verb use behind length		-26
verb use behind whole	-24
verb want behind at	50
verb want behind fine		45
verb want behind fine length		45
verb want behind half		19
verb want behind half length		19
verb want behind length		16
verb want behind quarter		-22
verb want behind quarter length		-22
verb want behind want	-29
verb want behind whole length		16
w # # percent		-23
w # # pressure		21
w # and	30	34
w # and length		29
w # deep	21	60
w # deep length		60
w # down		-29
w # long		58
w # long length		58
w # more	-58
w # of	-30
w # of area		-27
w # on	-65	41
w # run		24
w # run length		24
w # thick		34
w # thick length		34
w # up		22
w # up length		22
w # wide		22
w # wide length		22
w ( #		-29
w - #	-35
w <q> #	-49	-23
w <t> #		-10
w @ # length		-12
w a #	-35
w a # length		-27
w a hole		16
w a hole length		16
w about #		37
w about # area		19
w about in		28
w about in length		28
w about long		31
w about long length		31
w all #	-32
w and at		17
w and at length		17
w and on		-21
w and on length		-21
w at #	11	31
w at # length		24
w at # percent		-19
w at # temperature		21
w at and	23	44
w at centres		-31
w at centres length		-31
w at off	28	-18
w at off length		-18
w at on		37
w at to	30	-12
w at to length		-12
w back #		32
w back # length		32
w by #		27
w by # length		26
w cut #		22
w cut # length		20
w down #		37
w down # length		35
w every #	31	26
w every # length		26
w good #		29
w good # length		29
w got #		42
w had #	-29
w have #	16
w in #	-44
w is #	21
w is deep		41
w is deep length		41
w is from		22
w is from length		22
w is off	-19
w is short		36
w is short length		36
w it #	-61	27
w like #		18
w like # length		20
w maybe #		36
w maybe # length		33
w maybe long		23
w maybe long length		23
w need #		24
w need # length		24
w not #	-48
w of #	-42
w of # length		-13
w on #	-38
w on of	-20
w on sides	-16
w only #	13
w only # length		19
w other #	-32
w out # length		34
w reads #	29	20
w reads # other		-28
w says to	-39
w the #	-23	-22
w to #		29
w under #		43
w up #		35
w up # length		35
w wanted #	19
w was #		-21
w with #		-45
w x #		-18
w+1 # decimal	17	41
w+1 # decimal length		22
w+1 # quarter slope		16
w+1 # whole other		-25
w+1 # whole power		-58
w+1 # whole volume		11
w+1 -	-31	-32
w+1 - whole	-31
w+1 <n>		-50
w+1 <n> whole		-35
w+1 <q>	-35	-27			20
w+1 <q> whole	-32	-56
w+1 <q> whole length		-50
w+1 <t>	-29			22					26
w+1 <t> length		-42
w+1 <t> whole	-25
w+1 a	38	-45		-23		-20		-18					-20	149
w+1 a length		-51
w+1 above		43
w+1 above length		43
w+1 above whole		31
w+1 above whole length		31
w+1 across	38	31		38									63
w+1 across half		32
w+1 across half length		32
w+1 across length		31
w+1 across whole	34	23
w+1 across whole length		23
w+1 aff		25
w+1 aff length		25
w+1 aff whole		22
w+1 aff whole length		22
w+1 after		21										-34							24
w+1 and				28															35
w+1 and whole length		-24
w+1 apart length		35
w+1 are	-21
w+1 are whole	-21
w+1 at	17			-18				23		57
w+1 at decimal		37
w+1 at flow		28
w+1 at half		44
w+1 at half length		44
w+1 at quarter		21
w+1 at quarter length		21
w+1 at temperature		33
w+1 at whole temperature		33
w+1 away		61
w+1 back	13							55
w+1 back whole	-21
w+1 before		18																	29
w+1 before whole	-39	37
w+1 behind		47
w+1 behind length		47
w+1 below		53
w+1 below fine		29
w+1 below fine length		29
w+1 below length		53
w+1 below whole		23
w+1 below whole length		23
w+1 between		45
w+1 between length		45
w+1 board	-22
w+1 board whole	-22
w+1 bottom		29
w+1 bottom length		29
w+1 box		-20
w+1 box whole		-20
w+1 brackets	-20
w+1 brackets whole	-20
w+1 by											-31
w+1 c		39
w+1 c length		39
w+1 c whole		39
w+1 c whole length		39
w+1 came					48
w+1 centers		32
w+1 centers length		32
w+1 centers whole		23
w+1 centers whole length		23
w+1 clear		-13
w+1 clear length		57
w+1 cold pressure		25
w+1 cold whole		23
w+1 deep	46			52		41		17
w+1 deep fine		-44
w+1 deep fine length		-44
w+1 deep half		66
w+1 deep half length		66
w+1 deep quarter		62
w+1 deep quarter length		62
w+1 deep whole	36
w+1 done	-30
w+1 done whole	-30
w+1 down									-29	33
w+1 down whole		30
w+1 each whole		56
w+1 each whole length		54
w+1 end	-15
w+1 end whole	-15
w+1 even	85			47	57
w+1 even whole	85
w+1 for				30
w+1 for length		-7
w+1 for whole length		-41
w+1 from	38	43		75
w+1 from length		43
w+1 from whole	39
w+1 gap		43
w+1 gap length		43
w+1 h	-29
w+1 h whole	-29
w+1 high	13	40				43		29
w+1 high length		22
w+1 high whole		54
w+1 higher		27
w+1 higher length		27
w+1 hole		41
w+1 hole length		41
w+1 hole quarter		25
w+1 hole quarter length		25
w+1 hole whole		33
w+1 hole whole length		33
w+1 holes	-47			-18
w+1 holes whole	-47
w+1 in									77			30
w+1 in quarter length		29
w+1 in whole		-26
w+1 in whole length		-14
w+1 is	-23
w+1 is whole	-23	19
w+1 is whole length		36
w+1 layers	-25
w+1 layers whole	-25
w+1 left	51			55
w+1 left length		28
w+1 left whole		35
w+1 links	-16
w+1 links whole	-16
w+1 long	19			30		33		32
w+1 long fine		-16
w+1 long fine length		-16
w+1 long whole		41
w+1 long whole length		41
w+1 low		37
w+1 low length		35
w+1 low quarter		18
w+1 low quarter length		18
w+1 low whole		16
w+1 low whole length		16
w+1 lower		33
w+1 lower length		33
w+1 lower whole		29
w+1 lower whole length		29
w+1 max	-31													16
w+1 max whole	-31
w+1 missing	-31
w+1 missing whole	-31
w+1 no	-70	-52		-25
w+1 no length		-96
w+1 no whole	-70	43
w+1 nos	-26
w+1 nos whole	-26
w+1 not		38
w+1 not length		37
w+1 now	44	34		-19					48						28			28				-31
w+1 now whole	27	58
w+1 oc		21
w+1 oc length		21
w+1 oc whole		21
w+1 oc whole length		21
w+1 of	-32
w+1 of area		-33
w+1 of volume		-27
w+1 of whole	-34	-7
w+1 of whole area		-44
w+1 off		34		73
w+1 off fine		44
w+1 off fine length		44
w+1 off half		30
w+1 off half length		30
w+1 off length		35
w+1 off quarter		-15
w+1 off quarter length		-16
w+1 off whole		40
w+1 off whole length		43
w+1 on				-16								27									41
w+1 on decimal		38
w+1 on half		-28
w+1 on half length		-25
w+1 on whole length		-12
w+1 or	-16			36
w+1 or whole		34
w+1 or whole length		34
w+1 out						32			-19	-22	-32				47
w+1 out fine		42
w+1 out fine length		42
w+1 out length		51
w+1 out of plumb		41
w+1 out of plumb length		32
w+1 out whole		-19
w+1 out whole length		43
w+1 outlets	-18
w+1 outlets whole	-18
w+1 over		31
w+1 over fine		31
w+1 over fine length		31
w+1 over length		31
w+1 over whole		29
w+1 over whole length		29
w+1 panels	-20
w+1 panels whole	-20
w+1 panes	-14
w+1 panes whole	-14
w+1 per		-45
w+1 per length		-48
w+1 proud		22
w+1 proud fine		22
w+1 proud fine length		22
w+1 proud length		22
w+1 right		35
w+1 right length		35
w+1 risers	-32			-18
w+1 risers whole	-32
w+1 screws	-23
w+1 screws whole	-23
w+1 short	-38	45
w+1 short length		45
w+1 short quarter		21
w+1 short quarter length		21
w+1 short whole	-38	29
w+1 short whole length		29
w+1 shy		20
w+1 shy length		20
w+1 shy whole		13
w+1 shy whole length		13
w+1 side	-21
w+1 side whole	-21
w+1 sides	-18
w+1 sides whole	-18
w+1 so		-18
w+1 so length		-18
w+1 split									61	-17	-52
w+1 tall whole		76
w+1 tall whole length		76
w+1 the	-23	27
w+1 the half		19
w+1 the half length		22
w+1 the length		41
w+1 the whole	-23	14
w+1 the whole length		31
w+1 thick fine		44
w+1 thick fine length		44
w+1 thick whole		-18
w+1 thick whole length		-18
w+1 through		47
w+1 through whole		47
w+1 time	-12
w+1 time whole	-12
w+1 to				49
w+1 to fine		54
w+1 to fine length		54
w+1 to half		-26
w+1 to half length		-26
w+1 to quarter		21
w+1 to quarter length		17
w+1 too deep		19
w+1 too deep length		19
w+1 too high		-21
w+1 too high length		28
w+1 too high whole		-24
w+1 too long whole		39
w+1 too long whole length		39
w+1 too low		27
w+1 too low length		27
w+1 too low whole		27
w+1 too low whole length		27
w+1 too short		26
w+1 too short length		26
w+1 too wide		36
w+1 too wide length		36
w+1 top		35
w+1 top length		35
w+1 toward		40
w+1 toward length		38
w+1 tread	-22
w+1 tread whole	-22
w+1 under		27
w+1 under length		25
w+1 under whole		28
w+1 under whole length		28
w+1 up	38	23		26		74
w+1 up fine		-23
w+1 up fine length		-23
w+1 up length		23
w+1 up whole	38	47
w+1 up whole length		48
w+1 when	29			50					37
w+1 where		47
w+1 where length		36
w+1 which		15													30
w+1 wide				42		30
w+1 wide fine		28
w+1 wide fine length		28
w+1 wide quarter		-15
w+1 wide quarter length		-15
w+1 wide whole		56
w+1 wide whole length		56
w+1 with	14	31		-13					44				40
w+1 with decimal		-20
w+1 with whole	14	33
w+1 with whole length		-16
w+1 x						36
w+1 x whole		13
w+2 - <q>	-31
w+2 <q> #	-74	-38		-33											-21
w+2 <t> #				27					36						-29
w+2 above the		30
w+2 above the length		30
w+2 across #		29
w+2 across # length		29
w+2 aff #		25
w+2 aff # length		25
w+2 all round		58
w+2 all round length		58
w+2 all the		-25
w+2 all the length		-25
w+2 and <q>	-30			30
w+2 and <q> length		-23
w+2 and the	-27	21							27		-19
w+2 and the length		17
w+2 at <q>	-66	-20				-31
w+2 at the	37	48		-17					33	54					36
w+2 at the length		39
w+2 behind the		43
w+2 behind the length		43
w+2 below the		31
w+2 below the length		31
w+2 by <q>		27
w+2 by <q> length		27
w+2 by the		65		28					-16	32	-27	20
w+2 by the length		65
w+2 centers #		18
w+2 centers # length		18
w+2 cold #		24
w+2 cold # pressure		25
w+2 deep #	30			53		39
w+2 down #		-9
w+2 down # length		-11
w+2 for <q>		30													67							-54
w+2 for the	29	-26		51
w+2 high #		36						31
w+2 high # length		21
w+2 hole #		19
w+2 hole # length		19
w+2 holes #	-33			-14
w+2 in # length		49
w+2 in <q>		53
w+2 in <q> length		53
w+2 in the									28			35
w+2 long #	12					32		39
w+2 lower than		15
w+2 lower than length		15
w+2 max #	-31													16
w+2 more to						22
w+2 nos #	-26
w+2 not <q>		20
w+2 not <q> length		18
w+2 now #	56	56		-20		22			53						29			29				-32
w+2 now # length		52
w+2 of <q>	-33
w+2 of em	-37
w+2 of the	-18	-7						23
w+2 of the length		42
w+2 of them	-40			-15
w+2 of those	-26
w+2 of water		69
w+2 of water length		77
w+2 off the	42			68		42
w+2 on <q>		-68
w+2 on <q> length		-68
w+2 on center		42
w+2 on center length		42
w+2 on the	26			28								32			-20
w+2 out #		25
w+2 out # length		24
w+2 out of		29
w+2 out of length		31
w+2 out of plumb #		31
w+2 over <q>		28
w+2 over <q> length		28
w+2 over the		35
w+2 over the length		35
w+2 past the		-21
w+2 past the length		-21
w+2 proud #		24
w+2 proud # length		24
w+2 run #		33
w+2 run # length		33
w+2 short of		26
w+2 short of length		26
w+2 short on		25
w+2 short on length		22
w+2 shy of		19
w+2 shy of length		19
w+2 sides #	-18
w+2 thick #		53
w+2 thick # length		53
w+2 to <q>		32
w+2 to <q> length		16
w+2 to go	-65
w+2 to the	50			73		38
w+2 too deep #		19
w+2 too deep # length		19
w+2 too long #		20
w+2 too long # length		20
w+2 too short #		21
w+2 too short # length		21
w+2 top #		32
w+2 top # length		32
w+2 toward the		40
w+2 toward the length		38
w+2 under the		24
w+2 under the length		24
w+2 up #		20		40		21
w+2 up # length		20
w+2 up from		20
w+2 up from length		20
w+2 which is		25													34
w+2 which is length		25
w+2 wide #				33		45
w+2 with <q>		37
w+2 with a				24
w+2 with the													48
w-1 # decimal		43
w-1 # flow		26
w-1 # other		25
w-1 # volume		-24
w-1 # whole current		-35
w-1 # whole weight		-49
w-1 (	-51	-45		-24
w-1 ( length		-29
w-1 ( whole	-51	-31
w-1 +	-15																	29
w-1 + whole	-27
w-1 -	-39
w-1 - whole	-39
w-1 2 x whole		61
w-1 2 x whole length		65
w-1 <n> whole		55
w-1 <q>	-46	-43
w-1 <q> length		-15
w-1 <q> whole	-34	-37
w-1 <t>	-31
w-1 <t> length		57
w-1 <t> whole	-31
w-1 <t> whole length		39
w-1 @				-15		43
w-1 @ whole length		-17
w-1 a	-30			-19										22
w-1 a fine		47
w-1 a fine length		47
w-1 a whole	-27	-41
w-1 a whole length		-33
w-1 about				-12		56				-26	39
w-1 about area		24
w-1 about half		23
w-1 about half length		23
w-1 about quarter		34
w-1 about quarter length		34
w-1 about whole area		24
w-1 abt whole		-26
w-1 all	-26	-50
w-1 all length		-47
w-1 all whole	-25	-24
w-1 and half		-30
w-1 and half length		-30
w-1 and quarter		-17
w-1 and quarter length		-17
w-1 and whole		35
w-1 and whole length		34
w-1 are	-22			35
w-1 are fine		22
w-1 are fine length		22
w-1 are half		23
w-1 are half length		23
w-1 are quarter		29
w-1 are quarter length		29
w-1 are whole	-23	-23
w-1 are whole length		-23
w-1 around	-29
w-1 around whole	-29
w-1 at				54		28
w-1 at angle		28
w-1 at decimal		-28
w-1 at fine		62
w-1 at fine length		63
w-1 at pressure		41
w-1 at quarter		-13
w-1 at quarter length		-20
w-1 at temperature		21
w-1 at weight		28
w-1 at whole		27
w-1 at whole angle		26
w-1 at whole pressure		43
w-1 at whole temperature		21
w-1 at whole weight		28
w-1 back		39
w-1 back length		39
w-1 back whole		23
w-1 back whole length		23
w-1 be				46	13
w-1 be fine		30
w-1 be fine length		28
w-1 be quarter		38
w-1 be whole	23	-29
w-1 be whole length		-29
w-1 between	-24
w-1 between whole	-24
w-1 bottom		24
w-1 bottom length		24
w-1 bottom whole		62
w-1 bottom whole length		62
w-1 bout		28
w-1 bout length		28
w-1 bowed		20
w-1 bowed length		20
w-1 by	-10	26			22
w-1 by half		10
w-1 by half length		10
w-1 by length		26
w-1 by quarter		40
w-1 by quarter length		40
w-1 by whole	-10
w-1 corner		-37
w-1 corner length		-37
w-1 count	-35
w-1 count whole	-35
w-1 cut	-22	30
w-1 cut length		29
w-1 cut whole	-29	26
w-1 cut whole length		24
w-1 dated	-43					-20
w-1 dated whole	-43
w-1 did	-24
w-1 did whole	-24
w-1 done	18					39
w-1 done whole	18
w-1 down		34									25
w-1 down fine		-7
w-1 down fine length		-7
w-1 down half		32
w-1 down half length		32
w-1 down length		27
w-1 down quarter		24
w-1 down quarter length		24
w-1 down whole		33
w-1 down whole length		17
w-1 drilled		21
w-1 drilled length		21
w-1 drop		36
w-1 drop length		37
w-1 drops		27
w-1 drops length		25
w-1 every	41	52		97
w-1 every length		52
w-1 every whole	41	53
w-1 every whole length		53
w-1 for	-33	-41							-22
w-1 for length		-23
w-1 for whole	-40
w-1 for whole length		36
w-1 from												20								28
w-1 get				22		-32							39
w-1 good		49
w-1 good length		49
w-1 good whole		14
w-1 good whole length		14
w-1 got	-11																			26
w-1 got fine		-13
w-1 got fine length		-13
w-1 got whole	-11
w-1 had	-25
w-1 had whole	-25
w-1 has	-19
w-1 has whole	-19
w-1 have	-13	28		36		-14
w-1 have length		24
w-1 have whole	-13	-31
w-1 have whole length		-31
w-1 held		29
w-1 held whole		30
w-1 holding															47
w-1 holding whole		-12
w-1 hole		10
w-1 hole length		10
w-1 hole whole		30
w-1 hole whole length		30
w-1 holes		43
w-1 holes length		43
w-1 in	-35			-15		-23									31		23
w-1 in fine		49
w-1 in fine length		49
w-1 in whole	-21
w-1 is				51		23
w-1 is fine		54
w-1 is fine length		54
w-1 is percent		24
w-1 is weight		29
w-1 is whole percent		24
w-1 it				43															19
w-1 it fine		48
w-1 it fine length		48
w-1 it half		-35
w-1 it half length		-35
w-1 it quarter		61
w-1 it quarter length		61
w-1 it's						25			49
w-1 it's fine		51
w-1 it's fine length		51
w-1 it's half		39
w-1 it's half length		39
w-1 it's quarter		49
w-1 it's quarter length		50
w-1 it's whole		-7
w-1 last	-24
w-1 last whole	-24
w-1 leg		-30
w-1 like		22
w-1 like length		32
w-1 like whole length		29
w-1 long	-32
w-1 long whole	-32
w-1 maybe whole		22
w-1 me						34
w-1 measure		40
w-1 measured		26
w-1 measured whole		16
w-1 need				-15		6
w-1 needs		55		42
w-1 needs length		37
w-1 needs whole	9
w-1 not	-45	-67		-17
w-1 not length		-67
w-1 not whole	-45
w-1 now	-37
w-1 now whole	-37
w-1 of	-30	-32
w-1 of fine		-9
w-1 of fine length		-9
w-1 of half		-52
w-1 of half length		-52
w-1 of length		-34
w-1 of whole	-30
w-1 off	-23	65
w-1 off length		65
w-1 off whole	-23
w-1 on	-25
w-1 on whole	-25
w-1 only				32		24
w-1 only whole	-14
w-1 other	-30
w-1 other whole	-30
w-1 out				-19					22	20
w-1 out fine		46
w-1 out fine length		46
w-1 out quarter		48
w-1 out quarter length		48
w-1 over		28							44	-26	-30
w-1 over decimal		49
w-1 over decimal length		49
w-1 over length		27
w-1 over whole		-17
w-1 over whole length		-21
w-1 past									50						34							-35
w-1 pulling		29
w-1 pulls		39
w-1 pulls whole		41
w-1 put		-68
w-1 rated																					22
w-1 rated whole	-39
w-1 read	46	22		-22								53							26		68
w-1 read whole	34	22
w-1 reading	25	34		-21							-28		28		42						32
w-1 reading percent		23
w-1 reading whole	17	34
w-1 reading whole percent		23
w-1 reads	38			-31									69	-30
w-1 reads whole	34
w-1 run		25
w-1 run length		30
w-1 sagging		38
w-1 sagging length		38
w-1 said				-34					-39	46		58			33							-31
w-1 say		28		22								30
w-1 say whole length		-24
w-1 says whole		72
w-1 see													23
w-1 set				-23					46				-25
w-1 short whole		-10
w-1 short whole length		-10
w-1 side		-10
w-1 side length		-10
w-1 sits whole		22
w-1 sits whole length		22
w-1 slab		31
w-1 takes				-16		27
w-1 that's half		55
w-1 that's half length		55
w-1 that's whole		64
w-1 the	-23	-43
w-1 the half		-38
w-1 the half length		-38
w-1 the length		-39
w-1 the quarter		-42
w-1 the quarter length		-42
w-1 the whole	-23	-33
w-1 the whole length		-24
w-1 there		-21
w-1 there whole		-34
w-1 there's	-27
w-1 there's length		24
w-1 there's whole	-27
w-1 through	-22
w-1 through whole	-22
w-1 to		28							25
w-1 to decimal	40
w-1 to half		52
w-1 to half length		52
w-1 to length		31
w-1 to other		28
w-1 to quarter		26
w-1 to quarter length		26
w-1 to torque		-24
w-1 to whole torque		-24
w-1 took	-33	-23
w-1 took whole	-28	-33
w-1 under	-29	44										20
w-1 under length		43
w-1 under whole	-29
w-1 up		22
w-1 up fine		46
w-1 up fine length		46
w-1 up half		11
w-1 up length		29
w-1 up whole		18
w-1 up whole length		36
w-1 wall												30
w-1 wall whole		-36
w-1 wall whole length		-36
w-1 want		-35		-24		30
w-1 want whole		-39
w-1 wanted				27		-20
w-1 wants													21
w-1 wants fine		45
w-1 wants fine length		45
w-1 wants half		12
w-1 wants half length		12
w-1 wants whole		-30
w-1 wants whole length		-49
w-1 was				-15					29
w-1 was fine		-16
w-1 was fine length		-16
w-1 was quarter		24
w-1 was quarter length		24
w-1 with	-39	-11
w-1 with length		-28
w-1 with whole	-31
w-1 with whole length		-58
w-1 within length		68
w-1 x		-31		30
w-1 x length		-9
w-1 x whole length		36
w-2 # # flow		26
w-2 # # other		25
w-2 # # volume		-24
w-2 # <q>	-37												-15
w-2 # all	-27
w-2 # cut	-26
w-2 # got	29																			62
w-2 # it's	9	37		45		29			61
w-2 # needs						22
w-2 # only	-28
w-2 # say		44
w-2 # the		-44
w-2 # the length		-39
w-2 # there's	-27
w-2 # there's length		24
w-2 # want																				11
w-2 # wants		15											27
w-2 # wants length		15
w-2 <n> is		28
w-2 <n> is length		28
w-2 <q> -	-19
w-2 <q> and				34
w-2 <q> at	-47	-41		-35		-18							13	38				-26		-25
w-2 <q> at length		-44
w-2 <q> by	36	-23			44
w-2 <q> by length		-23
w-2 <q> not	-32			-21
w-2 <q> of	-27	-52
w-2 <q> of length		-52
w-2 <q> over		-24
w-2 <q> over length		-24
w-2 <q> to		22
w-2 <q> x length		12
w-2 a good		46
w-2 a good length		46
w-2 book says				26								-12
w-2 box is		59
w-2 box is length		41
w-2 by about		32
w-2 by about length		32
w-2 call it		-14
w-2 call it length		-15
w-2 calls for														30
w-2 cut at		17
w-2 cut at length		17
w-2 cut to		28
w-2 cut to length		28
w-2 down to	73	34		-28					77						61
w-2 down to length		22
w-2 for about		43
w-2 for about length		43
w-2 i count	-22
w-2 i got													40
w-2 in about		26
w-2 in about length		26
w-2 in at				43	-25				27						-25							22
w-2 instead of				37
w-2 is a				-23										54
w-2 is at	34	-41		61						31					-22
w-2 is only		22
w-2 it at	-12					-26				53
w-2 it at length		-25
w-2 it to	35			39											42
w-2 it wants	-24			-19		27
w-2 it was									66
w-2 it's a		-33
w-2 it's a length		-65
w-2 it's about		33
w-2 it's about length		33
w-2 must be							16
w-2 of the	-17
w-2 on a	-55													-28
w-2 out at				-25		20			-28										53
w-2 out of	-44
w-2 plate says	-25
w-2 set at	42	44		-40					96			-39	-24	46	20
w-2 set at length		44
w-2 should be	34																	43
w-2 sitting at		25
w-2 the last	-23
w-2 the other	-29
w-2 there was	-37
w-2 to be	-39	25		30	25							-16			-30
w-2 to be length		20
w-2 torqued to		-28
w-2 torqued to torque		-28
w-2 up at		41
w-2 up to	57			48		-38			28						26
w-2 wall is		20
w-2 wall is length		20
ws # # percent		-23
ws # # pressure		21
ws # CONJ	30	37
ws # CONJ length		33
ws # COP	-26
ws # PREP area		-15
ws # PREP length		49
ws # PRON	-31
ws # Votherp	-32
ws # Vworkbp		24
ws # Vworkbp length		24
ws # tarea	-38
ws # tdefect	-36	39
ws # tfixture	-31
ws # tmaterial	-24
ws # tsurface	-37
ws ( #		-29
ws - #	-35
ws <q> #	-49	-23
ws <q> PREP	-28
ws <t> #		-10
ws <t> w		32
ws <t> w length		32
ws @ # length		-12
ws a #	-35
ws a # length		-27
ws a PREP	-76
ws a Vworkb		37
ws a tsurface		23
ws a tsurface length		23
ws a w length		22
ws about #		37
ws about # area		19
ws about DET		-60
ws about DET length		-60
ws about PREP		28
ws about PREP length		28
ws all #	-32
ws and w		32
ws and w length		29
ws are w	32
ws at #	11	31
ws at # length		24
ws at # percent		-19
ws at # temperature		21
ws at CONJ	41	34
ws at CONJ length		31
ws at DET		74
ws at PREP	47
ws at SUB		-12
ws at SUB length		-21
ws at w	40
ws back #		32
ws back # length		32
ws be PREP	50
ws by #		27
ws by # length		26
ws cut #		22
ws cut # length		20
ws cut PREP		16
ws cut PREP length		16
ws cut w		20
ws cut w length		20
ws down #		37
ws down # length		35
ws every #	31	26
ws every # length		26
ws from PREP	66
ws good #		29
ws good # length		29
ws got #		42
ws got PREP		39
ws got w	-22
ws had #	-29
ws have #	16
ws held PREP		17
ws in #	-44
ws in PREP		37
ws in PREP length		37
ws in w		-35
ws in w length		-35
ws is #	21
ws is PREP		44
ws it #	-61	27
ws it w	22	39
ws it w length		39
ws it's PREP	17
ws it's PREP length		38
ws it's tdefect		32
ws it's tdefect length		32
ws it's w	37
ws like #		18
ws like # length		20
ws like PREP		34
ws maybe #		36
ws maybe # length		33
ws maybe PREP		-23
ws maybe PREP length		-30
ws maybe w		23
ws maybe w length		23
ws measured PREP		20
ws need #		24
ws need # length		24
ws needs PREP		25
ws needs PREP length		23
ws not #	-48
ws of #	-42
ws of # length		-13
ws of CONJ		-34
ws of CONJ length		-22
ws of PREP		-8
ws of PREP length		-8
ws of w	-30
ws on #	-38
ws on PREP	-21
ws on tsurfaceVworks	-16
ws on w		37
ws on w length		37
ws only #	13
ws only # length		19
ws only PREP		-30
ws only PREP length		-38
ws only w		41
ws only w length		41
ws other #	-32
ws out # length		34
ws out PREP		34
ws put PREP		-45
ws reading PREP		24
ws reads #	29	20
ws reads # other		-28
ws sagging PREP		23
ws sagging PREP length		23
ws say PREP	22
ws sits tdefect		26
ws sits tdefect length		26
ws that's PREP	-57	49
ws that's PREP length		49
ws the #	-23	-22
ws the w	-33	-38
ws the w length		-31
ws there's PREP	-31
ws to #		29
ws to PREP		37
ws to PREP length		34
ws to w		-53
ws under #		43
ws up #		35
ws up # length		35
ws up PREP		25
ws up PREP length		25
ws up w		24
ws up w length		20
ws wall PREP		21
ws wall PREP length		21
ws wanted #	19
ws was #		-21
ws was tdefect		27
ws was tdefect length		27
ws with #		-45
ws with PREP		40
ws with PREP length		42
ws with w	20
ws x #		-18
`;
