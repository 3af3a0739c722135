/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after &		20
after (	-9
after -	6
after /	-5			5
after above	23
after acclimate	-10		18
after account			5
after actually	20	-7
after add	-9			18
after after	6
after along		5
after already	7
after anybody				12
after anybody's		6
after arriba	16
after arrive			6
after backwards	7
after bad				21
after bar	4
after basement			11
after bathroom	-16	-4		29
after beat	4			-12
after bench	-4	-7	9
after bend	13
after big	5
after bleeding through		7
after board	16	-14
after book	9
after bought far imperative		14
after bought far none			7
after bought far past						5
after bought here		-13		-5	29
after bought here past		-15		-9	28
after bought here run-on					5
after bought sentence	-12				20
after bought sentence and	-15	-14		12	11
after bought sentence comma	-11	-14		-14	28
after bought sentence copula	9
after bought sentence none	-12	-17		-18	29
after bought sentence past	-14			14
after bought sentence run-on	24
after bow	20
after brass	26	-20
after bridge	7
after bring		12
after brush	-18	26
after bury	19
after buy	-29	18			8
after buzz	25
after came off	-18		26
after carton	-23	13	14
after catch	5
after cellar		-18	12
after change				12
after channel	9
after chatter	20
after clean			10
after clear	10
after clip	5
after close				6
after closet	8
after coat	8
after complete				9
after corridor	21
after counter	13	-24
after crook	27			-10
after crumbl				5
after crush	14
after daylight	5
after deal	6
after deck	16
after deep	8
after deliver	-10
after den	20
after didn't					10
after ding	6
after dining room	13
after doesn't		7
after drain	12
after drill				12
after drive	6
after drop	8
after drywall	12
after dump		10
after dust	7
after each	-10			13
after else	-8	26		-5
after everything	11
after everywhere	10
after extra	-34		22
after face	24
after factory	-15	22
after far	-13			22
after fell off		5
after fireplace				15
after first coat	12
after flash		6
after flat	7
after flip	8
after floor	12
after foot	13
after front				9
after frost	-8			15
after garage			12
after gas				16
after glue				12
after green	-11			17
after grout	28	-16
after hallway	16
after happen	-12	26
after hasn't			-13	6
after have far comma		6
after have far modal		4
after have far owed		10
after have far past	-11					13
after have here comma	16
after have here none	5
after have here past	17
after have here stop	9
after have here word	8
after have sentence comma		8
after have sentence imperative		30
after have sentence modal	-31	48
after have sentence none	-6		20	-19
after have sentence owed		14
after have sentence past	25
after have sentence word		21
after haven't	-13	16
after he's	6
after heat	11
after here			12
after high	5
after his	11
after hole	21			-11
after holes	11
after hollow	27
after home	-36	26	16
after hot	-10			18
after inspector	-7	11
after install	7
after into				9
after job	-12	9	5
after kicks out				9
after lacquer	-18	16
after lane	10
after latch	6
after laundry	21			-4
after leak	6
after lean	-14	10
after leaning			17
after let				9
after let go	16
after little	-14		8
after live	12
after look	7
after lot	-19	4	14
after lunch	17
after mark	16
after mask	23
after maybe	6
after mind	27		-12
after mine	-7	21
after miter	16
after mount				19
after mud	5
after need far and	7
after need far imperative		5
after need far modal	6
after need far word	18
after need here comma	-11	22
after need here none		22
after need here owed		9
after need here past		12
after need here run-on		8
after need here stop		13
after need sentence and		26
after need sentence comma		43
after need sentence none	-10	83
after need sentence owed	15
after need sentence past	-24		14
after need sentence present		6
after need sentence word	7
after next			4
after none far owed		10
after none far run-on	9
after none sentence imperative		4
after none sentence stop		-10			11
after north	11
after notch		8
after nursery	23
after office	-25	4		20
after one's	8
after ones	-31	26
after opened up		4
after or	6
after order	-13				31
after oughta	17
after our		5
after owner		12
after painted shut	15
after pantry	13
after paper		8		-6
after parking lot	10
after past	13
after peel	-5	18
after pick		10
after pile				17
after plate	14
after please		21		-12
after plumb	17
after popcorn	-15	-7	29
after promise		12
after rake				5
after re	12
after real	-8		25
after replace	-9			18
after require	23
after returned far copula	8
after returned far none	-8		16
after returned far past					14
after returned here	11
after returned here copula	12
after returned here past	8
after returned here start	5
after returned sentence	-21				19
after returned sentence run-on		5
after ring	17
after roll	-9			5
after roof	6
after rough opening's	-14					8
after sand	6
after scrap			10
after scrape	8
after scratch	13
after scribe	4
after second				8
after see	9
after she		9
after shed	-26	-15	29
after sheet	-4			14
after shim		10
after shot	15
after should	-7
after site	-11		23	-9
after smell	9
after snap	-16	31
after some	-25	35		-6
after somebody	8
after sort	9
after sound	13
after spare			18	-10
after spray	5
after squeak	9
after stack				6
after stain	-6	4
after stairs			11
after start	9
after steps	14
after stop			4
after store	-4				22
after street	14
after study	5
after tacky	6
after tap	12
after tell	-23			31
after template	10
after than	20
after the kid				5
after the kids	17
after the yard	-11					20
after their			6
after they're	5
after thick		6
after thing	25			-10
after think	6
after this	5
after til	9
after tile guy	-4	12
after time	6
after too high	31	-25
after too short	17
after touch	8
after trailer	-24	-33	30
after trim	-16	27
after underneath	5
after until	8
after use	-7			25
after used far imperative		6
after used far owed		9
after used here comma				24
after used here copula	-6			27
after used here none	-8	-19		24
after used here start	-10			9
after used here stop				7
after used sentence none	-7			19
after used sentence word		22
after van	-16		31	-7
after wait	13
after wet	16
after while					12
after white	-13	14
after width	-14					8
after wire				9
after won't	9
after work	6
after yet	7
again bought	-15		14	10
again need	16	-21
again returned	-5
again used			32
ahead #	22
ahead &	-27	30
ahead +	-8
ahead @	16
ahead across		17
ahead again	-6			18
ahead air	10
ahead already	-4		6
ahead an	-6
ahead anybody	5
ahead ap	4
ahead around	11
ahead arrive	-17	15
ahead as	12
ahead b	10
ahead baby	6
ahead bad	6
ahead bag	-8			12
ahead bar				6
ahead bed	22
ahead bend	12
ahead between	21
ahead bin		20
ahead board	-7	9
ahead bond		18
ahead book	-9		19
ahead both	17
ahead bottom	12
ahead break	-5	9
ahead bring		13
ahead burn				29
ahead cap	-14			22
ahead care	21
ahead change				15
ahead chuck		8
ahead clamp	7
ahead client	14
ahead closet	13
ahead code	21	-7
ahead cold side's	15
ahead confirmats	-12	25		-5
ahead could		11		-13
ahead counter	6
ahead crosses		10
ahead crown		-14			15
ahead crush	12
ahead dad	9
ahead dead	6
ahead deep	15
ahead den		19
ahead dig	12
ahead ding	11
ahead dip		5
ahead drain	13
ahead drill	8
ahead drip	5
ahead drop	5
ahead dry		14
ahead each	33	-5
ahead ease	4
ahead eat		-6		32
ahead edge	8
ahead eggshell	7
ahead either	16
ahead em	9
ahead empty	15
ahead enough	-10	-5	26
ahead ensuite	8
ahead even				13
ahead everything	-8			22
ahead exterior	5
ahead falta		10		-4
ahead figure		25
ahead finally	8
ahead fit	-6			20
ahead fix		9
ahead flash	11
ahead flat		5
ahead float				6
ahead floor	10
ahead foam				23
ahead footings	12
ahead forget		10
ahead fre			18	-4
ahead fresh			9
ahead front				9
ahead front room	11
ahead give	7
ahead good	6
ahead guess	-10	21
ahead half	-9		23
ahead hand			7
ahead haven't	-8	23
ahead height	13
ahead height's	11
ahead here			13
ahead him	-12		11
ahead hole	6
ahead hook				7
ahead i'd		17
ahead i've			11
ahead job		-4		22
ahead kids	4
ahead kit	-5
ahead lag				4
ahead land	11
ahead latch	12
ahead laundry	12
ahead let go	19
ahead line	9
ahead living room	15
ahead lose	6
ahead lot	6
ahead lower	6
ahead main	12
ahead master bath				5
ahead maybe	-10		23
ahead me		7
ahead mind	5
ahead mix	-11			19
ahead moisture's	17
ahead mount				17
ahead near	11
ahead need		17
ahead new		7
ahead nick	6
ahead old	7
ahead one's	13
ahead ones	7
ahead opened up	12
ahead opening's	8
ahead order	-6	23
ahead other			17
ahead out of plumb	15
ahead outside	14
ahead owe	-4	8
ahead patch	8
ahead peel	9
ahead pick					6
ahead pile			18	-5
ahead pipe				11
ahead pitch	15
ahead place				5
ahead plan	9
ahead plane	4
ahead please	-5
ahead plus	-10		14
ahead pool	5
ahead pour				12
ahead push	6
ahead quick	14
ahead quit	5
ahead rain						9
ahead read	9
ahead remind	5
ahead replace				14
ahead rest	-15		17
ahead return	-12					28
ahead rotten		13		-9
ahead row	15
ahead run's	18
ahead salon				6
ahead scrape	11
ahead scratch			6
ahead she's	5
ahead shed				14
ahead sheet	6
ahead ship				-5
ahead shop	7
ahead short		31
ahead shut	9
ahead shy	-34	39	-6
ahead sign	-9		12
ahead size	12
ahead snake	12
ahead snap	16
ahead snug	18
ahead solid	-5			14
ahead some	7
ahead sound	26	-7
ahead splash	21
ahead splice	13
ahead spot	6
ahead spray	6
ahead stack	-20	-18	6	26
ahead stagger	-7			15
ahead stain	14
ahead stairs	-16			26
ahead static	7
ahead strip			6
ahead supplier	-10
ahead swap				7
ahead swing		17
ahead system	8
ahead tall	12
ahead tap	17
ahead temp	11
ahead test	5
ahead the lady	-10		7
ahead then	11
ahead they	8
ahead they're	14
ahead they've						7
ahead thing	12
ahead through				22
ahead tie	13
ahead tile guy	-4	13
ahead time	5
ahead together	13
ahead toward	10
ahead trim	8
ahead truck	9
ahead try			9
ahead turn				5
ahead us		14
ahead use				18
ahead vent				6
ahead walk					13
ahead wall's	6
ahead walls	5
ahead we'll		15
ahead were	29
ahead why	5
ahead wide	15
ahead will		19
ahead wire	22
ahead without	-22	16	7
ahead work	5
ahead wrap			6
ahead you	4
any	246	-89	-156	-94	-287	-314
area after none sentence				10
area beside nothing				26
area cue need	-6	8
area cue used				9
area flawed	7
area left #	-32		-10	43
area null none no	-10			23
area right #	-25	9		17
area says none no	-10			23
area says past behind				9
area sold so false				8
area verb null no	-10			23
bare after bought sentence	13
bare beside bag	-7			15
bare beside bolt	-7			15
bare beside break	-7	15
bare beside buy	24	-8
bare beside buy b other	21	-8
bare beside cap	-10			17
bare beside eat	6
bare beside fre	10
bare beside guess	12
bare beside hang	9
bare beside have b nobody	13
bare beside have b person	8
bare beside lay	17
bare beside measure pp person	7
bare beside move p other	12
bare beside move pp nobody	7
bare beside need s nobody		9
bare beside need s other	16
bare beside order		13
bare beside pick	8
bare beside pop	6
bare beside say b person	9
bare beside screw	5
bare beside seal				8
bare beside send	6
bare beside set	12
bare beside swap	11
bare beside tape	5
bare beside throw	21
bare beside use	21			-7
bare beside use pp person	21			-16
bare beside walk	8
bare beside work bpp nobody	23
bare beside work p nobody	12
bare beside wrap	5
bare buy past behind	31	-8
bare left &	-9	13
bare left -	6
bare left Q	13
bare left buy	24	-8
bare left do	6
bare left every				6
bare left glue	6
bare left hang	5
bare left me		11
bare left miss	13
bare left need	10
bare left only	14
bare left order		6
bare left send	6
bare left set	7
bare left swap	20
bare left the	8
bare left there's	7
bare left use	25			-19
bare list need	-6	14
bare move past behind	7
bare named here role	6
bare nameless	9
bare need past before		6
bare need present behind	12
bare other modal before	5
bare right (	13
bare right /	25
bare right @	10
bare right back	6
bare right bring	5
bare right change	16
bare right cup	9
bare right cut	8
bare right down	5
bare right fit	8
bare right glue	32			-15
bare right just	5
bare right my	9
bare right never	-4			13
bare right next		5
bare right peel	-11	17
bare right replace	14
bare right short	22
bare right so	6
bare right stay	7
bare right were	12
bare say past before	7
bare see modal behind				7
bare then buy b	-10				36
bare then measure i	6
bare then move pp	6
bare then work bpp	5
bare use past behind			7
bare verb arrive before	10
bare verb can behind	6
bare verb cap behind	16
bare verb crack before	-13	7
bare verb dry before	7
bare verb dump before	7
bare verb fit before	6
bare verb fre behind	10
bare verb glue before	22
bare verb grab behind	19
bare verb guess behind	13
bare verb hang behind	15
bare verb know behind			5
bare verb lay behind	23
bare verb miss before	5
bare verb move before	6
bare verb order behind		15
bare verb pick behind	10
bare verb remind behind	5
bare verb replace before	11
bare verb screw behind	11
bare verb seal behind				12
bare verb send before	5
bare verb send behind	5
bare verb set behind	18
bare verb sister behind	-18			24
bare verb stop behind	7
bare verb swap behind	11
bare verb take behind						6
bare verb throw behind	12
beside are Q	8
beside are in				4
beside are on				11
beside arrive	-17	15
beside bag	-8			12
beside bag b other	-13			15
beside be G	8
beside be Q	18
beside be a	-12	5	9
beside be b person		6
beside bend	15
beside blow	17
beside bolt	-5			13
beside bolt pp other	-8			16
beside break	-7	11
beside bring		13
beside bring Q	-6	21
beside bring a	-6	18
beside bring b nobody		13
beside bring b other	-12	28
beside bring b person		5
beside bring me	-30	36
beside bring the	5	-6
beside burn	-22			41
beside burn pp person	-32			42
beside burn through	-8			23
beside buy	-9
beside buy Q	-16	35
beside buy a	-39		-5	-16	24	18
beside buy b nobody		37
beside buy b other	7
beside buy b person		16
beside buy pp nobody	-29	-31		-12	54
beside buy pp person	-19	-25			45
beside call	6
beside call it		5
beside can will other		-6		15
beside cap	-27			31
beside change				20
beside change Q	5
beside change b person	-23			23
beside change the	-15			24
beside clean b other		5
beside come T		-14			19
beside come bp other	10
beside come s other		-8			14
beside come up	22
beside come with	4
beside cover	20
beside crack pp other	6
beside crush	12
beside crush pp other	12
beside cut a	10
beside cut bpp person	13
beside dig	15
beside ding	10
beside ding pp person	7
beside ding the	7
beside do b other					8
beside do p other	7
beside do the					10
beside drill	10
beside drill Q	12
beside drip	5
beside drip i other	6
beside drip on	8
beside dump i other				9
beside eat		-8		34
beside eat Q	-30	-23	-5	45
beside eat i other	14
beside eat p other	-34	-21		48
beside feel b person	6
beside figure		25		-5
beside figure Q	-5	28		-7
beside find a	12
beside fit	-6			20
beside fix	-14	18
beside flush	17
beside forget	-7	15
beside frame	9
beside frame pp other	9
beside fre	10
beside get Q	-6		26
beside get b nobody		39
beside get b other		9
beside get maybe	-25		28
beside get me		25
beside get no	-24	28
beside get p nobody		-16	38
beside get p person			23
beside get s person	-7	15
beside get that	15
beside get the	7
beside give	21
beside go Q	-7	-5		29
beside go b other	16
beside go down	6
beside go p nobody	-4			33
beside go p other				17
beside go p person				21
beside go through	-16			49
beside grab	-5	9
beside grab Q	-28			-6	29
beside grab a	-14	27
beside grab b nobody		12
beside guess		13
beside hang Q	-24			33
beside hang b other		11
beside hang i other				4
beside hang on	-13	9
beside hang pp other				6
beside hang pp person	-14			24
beside has a			9
beside has has person			5
beside have Q			27
beside have a	8
beside have b nobody			38
beside have b person			49
beside have pp other	23
beside have pp person				7
beside hit a	14
beside hold Q	10
beside is a			13
beside is already	7
beside is on	9
beside kill	5
beside land	5
beside lay	-4			15
beside lay i other	13
beside lay pp person	-15			25
beside leave G	7
beside leave Q	-42	-6	58	-12
beside leave a	7
beside leave i nobody		5
beside leave of	10
beside leave on	11
beside leave pp nobody			8
beside leave pp person			12
beside leave s other	-9		12
beside like a	21
beside lose	6
beside make Q	7
beside make b nobody	-5	12
beside make pp person	21
beside measure bp other	10
beside measure i other	8
beside measure pp person	-7			5
beside miss Q	-9	28
beside miss the	12
beside mix	-15			22
beside mount	-8			20
beside move Q	13
beside move b other	15
beside move i person	-8		17
beside move p nobody	-4			33
beside move p other				17
beside move p person				21
beside move pp person			5
beside move the			4
beside nail pp nobody	17
beside need		19
beside need Q		12
beside need a	-12	27
beside need an	-28	30
beside need another		6
beside need b nobody		28
beside need b other		18
beside need b person		20
beside need more		14
beside need pp person	20
beside need the		-26	19
beside nick	6
beside order	-6	21
beside order G	6	-27			18
beside order Q	-12	28
beside order b nobody	-6	20
beside order b person		11
beside order pp person		-10			19
beside order the		13
beside other b nobody		28
beside other p nobody		-9	20			5
beside other p person			13
beside other pp nobody	-46	-12		-19	46	5
beside other s nobody	11
beside owe	-14	16			9
beside owe b person	-5				12
beside pack pp person				5
beside patch	11
beside peel	11
beside pick					7
beside pick b nobody		18
beside pick i person	13
beside pick pp nobody	-28	-18	-6	-13	42
beside pick pp person					12
beside pick up				-5	24
beside place	-4			12
beside plane	4
beside pop	11
beside pour	-10			16
beside prime b person	5
beside pull Q				10
beside pull the	5
beside put				10
beside put G	-14
beside put a	-6			4
beside put bpp nobody	-10			25
beside put bpp person				8
beside put i person		13		-6
beside put in				23
beside put on	-20			26
beside quit	5
beside quit bpp other	5
beside read	9
beside read Q	9
beside replace				14
beside replace pp nobody	-20			27
beside replace the	-12			19
beside return	-17	-5				30
beside rip b person	-6		6
beside roll	5
beside roll b person	10
beside run Q	-13			36
beside run a		8
beside run bp nobody		10
beside run i other	13
beside run out	6
beside run p nobody		-6		29
beside run the	18
beside say b nobody		6
beside say i person	14
beside say pp other	10
beside say pp person	10
beside scrape	9
beside scratch			6
beside screw	-8			13
beside screw pp nobody	-12			17
beside see b other				8
beside send	-8
beside send Q	-40	15				21
beside send pp other	-11		5			7
beside set				6
beside set Q	-5	-6		19
beside set a				14
beside set bpp person				15
beside set the	18			-7
beside shim	16
beside shim pp person	19			-6
beside shut	12
beside sign	-10		18
beside sign pp person	11
beside sister Q	12			-4
beside sister pp person	-8			21
beside sit in	4
beside skim pp nobody	8
beside snake	14
beside snap	15
beside spray	7
beside strip			9
beside swap	-6			20
beside swap pp person	-12			22
beside swap the				5
beside swing	-5	19		-7
beside swing b person	-10	21		-11
beside take Q	-26			17
beside take b nobody		-7
beside take b person				6
beside take me		-12	-6	13
beside take p nobody	-34		-7	-18		41
beside take p other		-10		30
beside take p person			13	-15
beside take the						21
beside tear p other	6
beside tell b nobody	-5	14
beside test	5
beside think			10
beside think b person			16
beside throw b nobody		12
beside tie	14
beside tile	13
beside try	-7		11
beside try b nobody	-30		19
beside turn				13
beside undefined has person			5
beside use				23
beside use Q				20
beside use a	-31			32
beside use b person	-8	7
beside use pp nobody				24
beside use pp person				32
beside walk					14
beside want Q		14
beside want a		7
beside want another	23	-15
beside want b nobody	31	-15
beside want b other	22
beside want b person		32
beside want it	16
beside want pp person	20
beside want s nobody		4
beside want the	7
beside were	22
beside were is other	23
beside work bp nobody		10
beside work bpp nobody				13
beside work p nobody				28
beside work p other	7
beside work s person	6
beside wrap			8
bound about			14
bound atMost	16
bound over	19
code	-47			34
count after bought far	-8					9
count after bought sentence	-30	-12	7	11	14
count after have here	-19	7	13	-9
count after have sentence	-19	32
count after need here		33
count after need sentence	-40	49
count after used far	-22	6
count after used here		-7		15
count after used sentence	-36		5
count beside are	-20			34
count beside be	5
count beside bring	-16	9
count beside buy	-10	13
count beside buy b nobody		12
count beside call	28
count beside change	-22	-11		34
count beside come	-5			20
count beside do	16
count beside get	-5	7
count beside go				13
count beside grab	-7				14
count beside hang	-53			47
count beside has			-12	9
count beside have			23
count beside have b nobody	-17	-6	31
count beside have b other	7
count beside have b person	-26		46
count beside have pp other	23		-13
count beside have pp person	-32			28
count beside hold	-12					9
count beside leave	-33	-8	44	-17
count beside measure p other	-19			27
count beside measure s other						7
count beside miss		18
count beside mount	-13			22
count beside move p other	-12	-5		20
count beside need	-9	30
count beside need b nobody		26
count beside need b other	-5	15
count beside need b person	-13	36
count beside need s other	7	-7
count beside nothing	-6
count beside other b nobody	-24	54
count beside other b other		11
count beside other b person		14
count beside other i other	13
count beside other p nobody	-14	-25	21	-14		21
count beside other p other				4
count beside other p person		-7	7
count beside other pp person		-10		-12		20
count beside pick	-12	31
count beside pull	23
count beside put	-12			28
count beside read	14
count beside replace	-12	-8		24
count beside run				21
count beside say b other	23
count beside say pp person	15
count beside send	-41	12				21
count beside set				7
count beside sister				-10
count beside take	-12	-20	-9	5		28
count beside undefined has other			-12	9
count beside use	-5			17
count beside use pp nobody	-6			27
count beside use pp person	-7			22
count beside work b nobody	-7	5
count beside work b other		6
count beside work b person	-11	9
count beside work bpp nobody	-12	-13		32
count beside work bpp other				12
count beside work bpp person	10
count beside work p nobody	-10			21
count beside work pp nobody	-9			30
count beside work pp person				11
count buy imperative behind		12
count buy past behind	-22	-10			40
count cue back	-4					39
count cue bought	-9	-23	-8		31
count cue have	-10		60
count cue need	-5	49
count cue used	-21			33
count have present before	24
count have present behind	-20		33
count kept	-30		43
count left #	-26			10
count left (	-40	14		17		6
count left +	-27	15		11
count left G	9
count left N	20
count left T			14
count left about			20	-13
count left all				19
count left and	-36	18
count left at	37
count left be	15
count left bring		5
count left buy	-22	30
count left for	15
count left get	-12		14
count left go				6
count left hang	-38			41
count left have			11
count left in				18
count left is	11
count left it's		8
count left last	8
count left maybe	-28		37	-7
count left me		21
count left miss		22
count left need	-7	30
count left of	25	-5
count left on				12
count left only	-8	-10	24	-9
count left order	-37	33
count left over	9
count left pull	27			-4
count left read	14
count left run				8
count left say	12
count left short	-42	51
count left that's	-31	12		13		6
count left the	-16		17
count left then	5
count left there's	-5		27
count left those	26	-10
count left through				5
count left to	-9		32
count left up	-46	9		28
count left use	-41			22
count left with	-10
count list need	-36	42		-19
count measure present behind	6
count more	-19	17
count move past before	-17		46
count move past behind	-33		26
count name flawed	-14
count named before area	10
count named before fixture				8
count named before surface	16
count named before tool		6
count named here defect	7	-12
count named here material	-55			20
count named here part	-90	6		15
count named here surface	34
count named here tool	-15	30
count named here word	-26
count nameless	17
count need modal behind	-32	23
count need owed behind		17
count need present behind	-12	23
count not ahead		31
count null modal behind	-10	9
count null none no	-12
count other imperative behind	-30	63
count other owed behind		13
count other past before	29			-7
count other past behind	-11					11
count other present behind		18
count pointing	-34			27
count right (	-17	25
count right +	-17			13
count right T	11	-10
count right above	8
count right already		-8	14	-11
count right and	-20	7
count right at	7
count right by		14		-11
count right can	-41	27	14	-12
count right come	10			-11		8
count right crack						7
count right for	-24	8		5
count right from	-8
count right get	8
count right has	15
count right in	-23			29
count right leave	-22		51
count right more		17
count right need	-5	23		-12
count right now	16
count right of	-18			6
count right over	-9		18	-4
count right short	-18	37		-15
count right still			17
count right strip		-5	19	-18
count right the		12		-15
count right to						12
count right under	9
count right up	-28			24
count right were	-23					22
count right with	22
count say past behind	18
count say present behind			16
count says imperative behind		31
count says imperative behind not	-12	27
count says modal behind		27
count says modal behind not	31
count says none no	-12
count says owed before		14
count says owed behind		5
count says past before	-6			15
count says past behind	-5
count says present before		6
count says present behind	-9		16
count sized	-50	32
count sold so false		8
count sold so true	-10
count then have b						7
count then have pp				5
count then measure p						17
count then move b	13			-5
count then move pp	-19		52
count then move s				12
count then need b		10
count then other i	39	-8		-10
count then other pp						7
count then other s		13
count then undefined has	16
count then undefined will	-23	16	10
count then work b	-7		16	-7
count then work pp	-8			41
count then work s	-41	11				17
count use past behind				25
count verb bring behind	-26	18
count verb buy behind		14
count verb call behind				11
count verb get behind	-11	6
count verb go behind	7
count verb grab behind	-7				14
count verb hang behind	-38			42
count verb have before	24
count verb have behind	-14		30
count verb i'll behind	-12	25		-13
count verb leave before	-26		49
count verb leave behind	-6		28	-11
count verb move behind	-14		10
count verb need before	-5	23		-12
count verb need behind	-5	34
count verb null no	-12
count verb pick behind	-37	44
count verb pull behind	29
count verb put behind			-13	13
count verb replace behind	-12	-8		24
count verb run behind	-21			26
count verb send behind	-10		-10			21
count verb sister behind				-10
count verb strip before	30			-15
count verb swap behind		-8	-5
count verb take behind	-19	-20	-15			33
count verb use behind				15
count whole clause	-19			24
count work owed behind	31	-7
count work past before	-6			43
count work past behind				31
count work present behind	-6			14
cue bought					45
first N	-40	36
first an	-40	33
first anchor		10
first any	5
first anything				4
first black	6
first block	13
first both				16
first bracket	6
first cap	7
first caulk	12
first cust	18
first drain	8
first drill	15
first drywall	12
first due	4
first eggshell	-28					22
first foam	15
first glue	6
first her	8
first hot	4
first mud	17
first nail	4
first new	-31			32
first oak	-7			16
first our	10
first paint	4
first plate	6
first plenty	-9		20
first prime	14
first screen	10
first seam	5
first second coat	5
first shim		11
first silicone				13
first some	-17	17
first step	7
first strike	7
first temp	13
first those	14
first tile	7
first wall	12
first white	23
first zone	4
group range	12
head abt	8
head acrylic	-18	14
head adhesive	-22
head aff	10
head air	11
head anchors	-17	13	10
head anything	12
head architraves	12
head back						25
head baffles	18
head balusters	4
head bar	-19	10		12
head baseboard	4
head bath fan	5
head batt	21	-7
head batts		7
head bed				7
head belt	-19	12		13
head belts			9	-11
head bench	10
head bit	20			-5
head blade	-13		12
head blinds				11
head blocks	-20		7
head blue tape		17
head boards	-15		4	17
head bolts	-8	18
head bond		10
head bonding primer	-24	17
head boots	21		-4	-22
head bowl	6
head box	-9
head bracket	-10			5
head bracket's			15
head brads	-9		-6	-12	17
head braided lines			7
head brass	-8	17
head breakers	-19					20
head brick	-32		16	18
head brother	8
head bumpers	-16	17
head cabinet screws	-14		5
head cabinets		-15	23
head cable	-15			24
head can lights				5
head cap	-5
head carcasses	34			-20
head carpet	22
head cartridge	-5		9
head ceiling	10
head ceiling tile			14	-7
head chair rail	13
head chimney	4
head circuit	11
head close	5
head coat	24
head coat hooks				5
head code	13
head coil	28
head cold	6
head corners	19
head couplings	-10			14
head cricket	14
head crown's	8
head dead	10
head deck screws	-24	13		11
head deep	15
head dimmer		4
head disposal	4
head door's	6
head downspout				12
head drain	26
head drawers	20
head drill	6
head drop	11
head drywall				9
head drywall's	-8			7
head due	4
head dumpster	11
head eggshell	-27	28
head elbow	-33	39
head elbows	-40		5	21
head electrical	18
head enamel	-22		19
head end caps	-22	7		6
head enough		-5	16
head epoxy	-20		11	5
head except	11
head factory	8
head falls	5
head fan	21
head fascia	13
head fell		10
head fence	5
head filter	-11
head filters	-17			21
head fine	10
head finish nails		26
head fire caulk		28	-9	-21
head flange	5
head flashing tape		-17		25
head flex	-6	31
head flow	10
head foam	-31
head folks	19
head footings	4
head frames			5
head fridge	10
head full	-18	25
head furnace			6
head gas	10
head gasket	-11	21
head gfci	7
head glue's			8
head go	4
head good	14
head gravel's				11
head gray			5
head grid	-5			14
head grout	13
head grout's			5
head gutter		-20		22
head gutters	4
head hair	8
head hall	-32			39
head handles	-15		16
head handrail	11
head hang	7
head hanger				13
head hangers				-8
head hardware	-6		18
head header	13
head heat mat's	17
head heat pump	9
head height's	15
head hidden clips	-11	-8	4		11
head high	23
head hinges					7
head hole	25
head holes	8
head hood			10
head hooks		-5		7
head hot				6
head house	4
head humidity	7
head insp	14
head instead					17
head insulation		-7			11
head jamb	5
head joist	27
head keys	5
head kit	-23	11	11
head kitchen	5
head knife	-9	18
head knobs	-21		15
head ladder		8
head landing	10
head ledger	14
head left hand	-22	25
head leg	13
head level	10
head lid	-12
head light switch	22
head lights	26
head line set	12
head lines	19
head list	9
head lockbox	8
head locks			12	-8
head loose	26
head machine	9
head maglock	18
head marble	25			-11
head mastic	-38	12		23
head mini split	9
head mirror				8
head morning	5
head mortar	-21	17
head mud	-4	27
head must	13
head nm	-11			7
head nosing	-10					20
head nut	5
head only	12
head opening	6
head outlet	22
head outlets			18
head outside		16
head pad	-6			15
head panels				4
head pendant	5
head pickets		7
head pins	-12	21
head pipe's	23
head pipes	17
head plank	14	-4
head plaster	8
head plates	-22	18
head plugs	-14			7
head ply		-6	15
head plywood's		6
head poly				11
head pressure	22
head primed	7
head primer	-7
head print	18
head putty				4
head pvc	-5			22
head quiet	4
head rack	6
head rail		5
head rails	-9
head receptacles	-22			23
head reducer	-14	24
head return	7
head rim	-16			26
head rim joist				12
head ring	-4	13
head rise	6
head riser's	7
head rock	10
head rodding point	17
head rods	-14
head roller					7
head round	9
head run	27
head satin			17	-11
head screen	7
head screwdriver	9
head sealant	-11		12
head sealer	-11			-5	7
head set				21
head shelf pins	-10			22
head shelves		-13		6
head shims	-16	5	6
head shingles			13
head shower walls	15
head sides	35
head siding		-5
head silicone	-4
head sink	15
head skim	5
head skirting's	-4			5
head slider's	6
head slow	17
head smoke	16
head sod	-5			12
head soffit	7
head soffit vents	23
head solid	13
head sorry	11
head speakers	-30	-5	17	9
head splice	6
head square	17
head stack	26	-9
head staple	18
head staples				4
head static	12
head step	7
head still	17
head stone	-4
head stop	17	-6
head store	8
head stove	11
head straight	10
head strainers	-19
head street	-22		11
head string	11
head structural screws	-6
head stud	9
head subfloor	16
head supply line	-12				19
head sweep	-7
head switch	14
head tag	20
head tall	5
head template	12
head thin set			6
head thing	15
head thinset	-6
head third	14
head toggles	-21			29
head towel bar	-21	-15		-9	12	21
head track	9
head tread	12
head treads	-12			8
head tub	8
head tub's	17
head two by ten	15
head uppers				14
head upstairs	-17			29
head vanity top	4
head vapor barrier	-6	9
head vinyl				7
head wall tile	12	-15
head washer	-6
head washers	-22	36
head water	15
head water's		9
head wax ring	-43		5	30
head wc	7
head weatherstrip		9
head well		4
head whip	-8	-7		22
head wide	12
head window's	9
head windows				21
head wood filler	-19	34		-12
head yet	10
joined and modal		6
joined and owed	14
joined comma modal	4
joined run-on none	5
kept			16
last cue bought same	-26	22		-9	6
last cue need same		12
last use buy imperative same	-5	32
last use buy modal same		10
last use buy owed same	13
last use buy past same					24
last use buy present other		14		-6
last use measure imperative same			14
last use move modal same	27
last use need modal same	-7
last use need owed same		13
last use null imperative other	19
last use null modal other	-5		4
last use null owed other	10
last use null owed same					7
last use other owed same		21
last use say owed same	6
last use see imperative other	-17	-10	13	-10	17
last use see owed same	10
last use use past same	-15			15
last use use present other	18
last use use present same	-5		19
last use work owed other		9
last verb add other				5
last verb adjust same	11
last verb ask same	5
last verb bolt same	-18			5	17
last verb burn same			4
last verb buy other	4
last verb buy same		13
last verb buzz same	-30			19
last verb call same	-12	11
last verb can't same	8
last verb caulk other	20
last verb check other	6
last verb close same	10
last verb count same	-7
last verb crack same	-41	20
last verb cut other	7
last verb do other			12
last verb doesn't same				-14
last verb drill same	15
last verb drop same	18
last verb eat same	6
last verb feather same		18
last verb feed same	-12			18
last verb figure same	-16	5	11
last verb find other	-21		15		17
last verb fire same	-12	17
last verb fit other	6
last verb fit same		11
last verb fix same	-9			17
last verb forget same	31	-23
last verb frame same	-29	15		13
last verb fre same	18
last verb glue other	20
last verb grab same					8
last verb grind same	6
last verb hand same						8
last verb hang same				16
last verb hit same			12
last verb hold other				7
last verb hush same	5
last verb install other		9
last verb keep other			5
last verb keep same		14		-8
last verb know same	-5		9
last verb land same		-11	18	-7
last verb lay same		6
last verb leak same	18
last verb look other	-5				14
last verb make other			5
last verb measure same	33
last verb meter same	18
last verb mount other	18
last verb move other			4
last verb nail same		8
last verb need same		25
last verb notch same	13
last verb open same	20	-5
last verb order same		6
last verb pack same		-14		11
last verb paint same	22	-14
last verb pass same	8
last verb patch other	6
last verb pick same		16
last verb plane same	5
last verb pop same			10	-16
last verb prime same			13	-15
last verb pull same				17
last verb put other				4
last verb rack other	22
last verb read other	-5
last verb read same				10
last verb replace other	-12	32
last verb replace same		-7	10	-15
last verb rip same	10
last verb rock same	7
last verb roll other	7
last verb roll same	18
last verb screw same	6
last verb scribe other	22
last verb seal same				6
last verb send other	-7		13
last verb set other	-6			5
last verb show same		16
last verb sister same	23
last verb sit other	-13				9
last verb sit same	9
last verb snake same	10
last verb snug same		12
last verb splice other			10	-8
last verb squeak same	-14	13
last verb start other	14
last verb start same				10
last verb stick other		10
last verb strip other	-13			19
last verb sweat same		5		-8
last verb tear same	16
last verb tell other	-5		12
last verb tell same	6
last verb think other	-10			13
last verb throw other	7
last verb throw same		4
last verb top same	17
last verb trace same				10
last verb trim other		15
last verb trip other	9
last verb trip same	-12	19
last verb try same	20
last verb turn same		-8	15
last verb use same	-13		7	8
last verb vacuum same	15
last verb wait other	6
last verb wait same		7
last verb wanna same	-10	-7			21
last verb want other	-12		17
last verb wire same	14
left # G	10
left # N	7
left # Q		-7	22	-7
left # about		14		-7
left # all	-19	-12		27
left # bring		14
left # buy		6
left # cut	4
left # every	18
left # from	-16		21
left # get	-16	27
left # grab	-10	11
left # have			25
left # in	16
left # just	13
left # leave			4
left # need		20
left # of	5
left # order		11
left # return	-13	-12	-15	-12		33
left # run	-4
left # short	-36	46
left # that's	-13			12
left # the		-16	26	-6
left # there's			10
left # throw	-14	31
left # use				30
left # want	8
left # we're	-15	26
left # with	16
left &	-9	13
left (	-10
left +	-10			9
left -	6
left /	5
left @	9
left G +	-16	8
left G Q		14		-5
left G and	-27	22
left G for	6
left G get	10
left G has	7
left G have	20
left G in	12
left G is	9
left G miss		6
left G of	15
left G with		6
left N and	-24	22
left Q G	-11			16
left Q Q	13
left Q and	-6	12
left Q by	7
left Q from	7
left Q in	25
left Q of	10
left Q off	8
left Q on	10
left Q over	15
left Q then	5
left Q to	6
left Q under	8
left Q where	10
left T at	10
left T with	-11	20
left all				22
left already		-10	15
left and		10
left are	5
left are in				12
left around	14
left as	16
left between	9
left bring		11
left bring me	-26	31
left burn through	-8			23
left buy	-9
left call it		13
left come up	22
left down				6
left down to	-17	-4	40
left drill	12
left drip on	8
left eat		-10		24
left figure		26		-8
left fill	14
left get			9
left get maybe	-24		21
left get me	-14	27
left glue	6
left go				17
left go on	9
left go through	-33			52
left gonna need	15	-10
left gonna want	-15	27
left gotta be	9
left grab	-27	14			15
left half	-10		17
left hang				4
left hang on	-13	9
left have			6
left hold	8
left i get	-17		39
left i have	-21		33
left i need		15
left i pull				7
left i put				13
left i run	-20			30
left i set	-24			32
left i swap	-20			26
left i use				31
left i want		19
left i'll bring	4
left i've get	-10		29
left in with	-12	20
left it need		5
left it on	5
left it to	21
left it want	-6	15
left it with	-7			26
left it's get	-23	15		14
left just	12
left lay	-23			29
left leave			7
left leave of	10
left leave on	11
left living room	14
left loose	17
left lose	8
left make	6
left maybe	-25		38
left me		19
left miss		22
left mix	-14	-7		30
left move	5
left mud and				15
left near	11
left need		18
left new	-35	33		5
left of the	29			-21
left only			23
left order	-9	23
left out at	4
left over	5
left paint	6
left past	8
left pick		7
left pick up	-4			-10	23
left pop	6
left put in	-6			28
left read	13
left replace				12
left return	-20	-8		-7		31
left run				4
left sand	-16	10	6
left scrape	7
left scribe	12
left seal	5
left send	-9					10
left set				25
left short	-34	55
left sister				4
left sit in	5
left still need		10
left swap	-4			17
left take	-8			7
left than	4
left that	4
left that with	-8			19
left that's	-10			10
left the lady want	-12	17
left the last	17
left them					14
left there be	23
left there's			10
left those	26	-10
left those and		25
left through				39
left throw	-27	23
left to be	11
left to move	10
left try	-5		14
left up	-11			8
left up on	-13			22
left up to	17
left us	-8	21
left use				27
left we have	-5		23
left we need	-6	22
left we use				24
left we're	-15	26
left you	16
left1 &	-9	13
left1 (	-10
left1 +	-10			9
left1 -	6
left1 /	5
left1 @	9
left1 all				22
left1 already		-10	15
left1 and		10
left1 are	5
left1 around	14
left1 as	16
left1 between	9
left1 bring		11
left1 buy	-9
left1 down				6
left1 drill	12
left1 eat		-10		24
left1 figure		26		-8
left1 fill	14
left1 get			9
left1 glue	6
left1 go				17
left1 grab	-27	14			15
left1 half	-10		17
left1 hang				4
left1 have			6
left1 hold	8
left1 just	12
left1 lay	-23			29
left1 leave			7
left1 living room	14
left1 loose	17
left1 lose	8
left1 make	6
left1 maybe	-25		38
left1 me		19
left1 miss		22
left1 mix	-14	-7		30
left1 move	5
left1 near	11
left1 need		18
left1 new	-35	33		5
left1 only			23
left1 order	-9	23
left1 over	5
left1 paint	6
left1 past	8
left1 pick		7
left1 pop	6
left1 read	13
left1 replace				12
left1 return	-20	-8		-7		31
left1 run				4
left1 sand	-16	10	6
left1 scrape	7
left1 scribe	12
left1 seal	5
left1 send	-9					10
left1 set				25
left1 short	-34	55
left1 sister				4
left1 swap	-4			17
left1 t fixture.	13
left1 t role.	14
left1 t tool.	9
left1 take	-8			7
left1 than	4
left1 that	4
left1 that's	-10			10
left1 them					14
left1 there's			10
left1 those	26	-10
left1 through				39
left1 throw	-27	23
left1 try	-5		14
left1 up	-11			8
left1 us	-8	21
left1 use				27
left1 v buy.	-25	23
left1 v have.			6
left1 v measure.	6
left1 v need.		12
left1 v return.	-20	-8		-7		31
left1 v use.				27
left1 we're	-15	26
left1 you	16
left2 /	-23	19
left2 a	-11	13
left2 again	-11			18
left2 air	11
left2 all			6
left2 already	-11		7			7
left2 bag	-7			15
left2 bay	7
left2 be	8
left2 bolt	-7			15
left2 bottom	16
left2 bracket	-9	21
left2 bring	-23	5
left2 burn				18
left2 can	10
left2 can't	5
left2 cap	-22			28
left2 ceiling	5
left2 check	6
left2 could		22		-25
left2 crack	5
left2 ding	11
left2 dining room	6
left2 don't	20
left2 down			19
left2 em	10
left2 floor	4
left2 frame	11
left2 from	17
left2 go				6
left2 good	12
left2 hall				11
left2 have			10
left2 here	9
left2 hold						4
left2 homeowner	5
left2 hook	9
left2 house	8
left2 i'd	-6	22
left2 i'm		9
left2 i've			14
left2 in	29
left2 inspector	18
left2 keep	6
left2 lay	-9	6
left2 loose	8
left2 lot	4	-12				6
left2 make		10
left2 mark.		4
left2 mud				15
left2 nail				10
left2 need	-12	10
left2 not		6
left2 nothing	20
left2 now				16
left2 only				13
left2 over			13
left2 owe	-28	21		-6	16
left2 owner	12
left2 pick				-4	21
left2 pull	9
left2 put	-26	-6		49
left2 right	16
left2 rip	14
left2 sand	13
left2 scribe		7
left2 send	19
left2 set	30	-11		-9
left2 sheath	7
left2 short		21
left2 should	13
left2 shy		-9		14
left2 side	11
left2 size	7
left2 splice	8
left2 stairs	8
left2 still			13
left2 swap	-14			22
left2 t fixture.	13
left2 take						8
left2 tape		5
left2 tear	9
left2 tell	5
left2 that	-7
left2 the lady	-4	11
left2 there's	-25	-13	44	-14
left2 those		9
left2 through	15
left2 tile	15
left2 top	15
left2 under	4
left2 use	-26			37
left2 v buy.	-6	17
left2 v have.			10
left2 v use.	-26			37
left2 walk	6
left2 want	8
left2 water	10
left2 we're		13
left2 wide	14
left2 will	-10	25
left2 wire	14
left2 with				21
left2 you	23
left3 all	-5
left3 already	-9			17
left3 another		5	-11	5
left3 are	-4			26
left3 back	-11
left3 before	18
left3 both	27			-18
left3 can't	-11			18
left3 corner	10
left3 down				7
left3 drop	14
left3 dump	8
left3 electrician	14
left3 em	7
left3 end				12
left3 every	-6			15
left3 for	16
left3 hall	14
left3 have	19
left3 his	9
left3 hit				13
left3 i'll	19
left3 i'm			10
left3 i've	-8			10
left3 if	8
left3 just	-7	-16	12
left3 last	-22			22
left3 leave			5
left3 like	10
left3 loose	8
left3 make	14
left3 maybe			14
left3 my	14
left3 need		12
left3 new	7
left3 nobody	7
left3 now		-4		11
left3 off	7
left3 only	18
left3 out	19
left3 pull	11
left3 right	6
left3 run	5
left3 send	-20	18
left3 she	7			-14
left3 she's	12
left3 shim	17			-6
left3 somebody	-11	10
left3 still	-5				7
left3 take	13
left3 that's				6
left3 there's	20
left3 they	22
left3 this	7
left3 too	-8	15
left3 up				14
left3 use	22			-12
left3 want	5
left3 were	16
left3 when	4
left3 with				7
left3 you	6
length after have far	-24	22
length after need here		22
length after need sentence	-12	33
length after none here	36
length after none sentence		8
length after used sentence	-11	-6	29	-9
length beside get	-39	8	25	-9
length beside is	23
length beside need	-6	20
length beside need b nobody		16
length beside need b person	-21	32
length beside nothing	-8
length beside other b nobody		13
length beside run	-9			23
length beside undefined is other	28
length beside work pp other			12
length cue have	-11		29
length cue need	-14	52
length cue used				28
length flawed	12
length kept	-16	6	18	-15
length left #	-20	10		19
length left about	-5
length left in	5
length left is	19
length left need		20
length left over	18
length left up	-14			14
length name flawed	-7
length named before surface	21
length named here material	-66	38
length named here part	-11	24		-7
length named here word	-28	17		15
length need owed behind	-8	26
length null none no	-8
length other imperative behind		13
length other modal behind	-8	7
length other past behind	-15	-11	30	-12
length pointing	-16	-20		21
length right Q	31	-12
length right and	-33	34
length right of	-16	-20		21
length right up	-7	-18		24
length says imperative behind		15
length says modal behind		11
length says none no	-8
length says owed behind		18
length says past behind	-17			31
length says present behind		12
length sized	-54	27		21
length sold so true	-17	20
length then move pp	-18		32	-5
length verb get behind	-39	8	25	-9
length verb need behind	-18	32
length verb null no	-8
length verb want behind	-8	22
length whole clause	-19	35
length work past behind	-8			31
list have	-28	-35	46	-30
list need	-24	56		-14
many	16
marked	-29	48
meant back 1	-10
meant back 5	5	-7
meant back 6	26
meant back 7		5
meant back 8	19		-5	-21
meant before new	16	-22
meant before no	-10	14
meant flawed false	31
meant ran out	-38	45
more	-6	25
named before area				14
named before tool	-13		7
nameless	22
next cue bought other		7
next cue bought same						9
next none same and		8
next none same run-on	13
next past same and				11
next past same stop	6
next present same stop	15
next use buy imperative same	-11	21
next use buy modal same	-14	26
next use buy owed same	-18	16
next use buy past other	12
next use buy past same					8
next use have imperative same	20			-10
next use have present other				6
next use measure imperative same	10
next use move imperative same	6
next use move past other	9
next use move present other		25
next use need past other	-7		9
next use null imperative other	-6		5
next use null imperative same			8
next use null modal other	4
next use null owed same	15
next use say modal other	8
next use say modal same	13
next use say past other	-18			19
next use say present other		16
next use see imperative other			9
next use see imperative same	11
next use see present same	15
next use use modal same		5
next use use present other	5
next use work past other	4
next verb add same	24
next verb ask same	18
next verb blow same	6
next verb bolt same	-39	-5		47
next verb borrow same			9
next verb bring other		-13
next verb buy other		-8	12
next verb cap same	13
next verb change same				10
next verb check other			5
next verb chuck same	11
next verb clamp same	11
next verb clean same	18
next verb come same	13
next verb complete other		15		-7
next verb correct other	6
next verb crack same	4
next verb cut other	4
next verb cut same	10
next verb dig same	9
next verb do other				7
next verb draw same	10
next verb drill same	16
next verb drop same	20
next verb dry other		-6		17
next verb either same	19
next verb feather same	12
next verb figure same	16
next verb find same	8
next verb finish same		15
next verb fit same		4
next verb fix same	30
next verb flash same	12
next verb float same	8
next verb forget same	-10	-11			23
next verb give same		-11				18
next verb glue other	16
next verb glue same				6
next verb go other		22
next verb gotta same	21	-11
next verb guess same	14
next verb hang same				6
next verb hold other		-12		14
next verb hook same		10
next verb hum other	22			-9
next verb hum same		14
next verb keep same	-13
next verb lay same	5
next verb leak same				5
next verb level same				6
next verb make other	15
next verb make same	5
next verb mention same	13
next verb miss same	4
next verb move other		10
next verb mud same	12
next verb open same		-5
next verb order other		-14	9
next verb order same	-21	18			5
next verb pack same	9
next verb patch same	18
next verb pin same	12		-9
next verb plane same	7
next verb point same	5
next verb pop same	-4	16
next verb pour same		9
next verb pull same	11
next verb read same	5
next verb reckon same			11
next verb recut same	6
next verb rehang same	5	-5
next verb reorder same	-24	32
next verb reroute same	15
next verb reset same	15
next verb run other				8
next verb sand same	4
next verb say other	-17	29
next verb see same	14
next verb send same	-4	11
next verb shave same	12
next verb sign same	18
next verb sister same	17
next verb sit other	-9	-13		14
next verb skim same	15
next verb stain same	8
next verb start other			6
next verb stick same	-19		11
next verb strip same	19
next verb stuff same		12
next verb swear same		-7		9
next verb swing same	-11			17
next verb take other	-8	17
next verb tighten same	14
next verb try same	6
next verb turn same	6
next verb walk same	-4					11
next verb wipe same	8
next verb wire same	-7			20
one after have far	16	-7
one after have sentence		6
one after need far	-4			13
one after need here	-17	29
one after none far	-24			5
one after none here	22
one after used far	-5				9
one after used here	-8	-7		22		7
one beside be	-16	8	13
one beside bring	-21	33
one beside buy	-37		-5	-15	16	20
one beside buy b nobody	-22	28
one beside get	-9
one beside go				5
one beside grab	-22	28
one beside has			8
one beside have b other	5
one beside hit	7
one beside is			6
one beside like	8
one beside make	13
one beside move pp person	10
one beside need	-5	21
one beside need b other		4
one beside need b person	-5	22
one beside need s nobody		7
one beside need s other	-5	15
one beside other b nobody	-22	26
one beside other b other	-25	17
one beside other b person	-9	5			5
one beside other i other	-18	30
one beside other i person	18
one beside other p person	-23		15
one beside owe	-19				19
one beside pick	17	-19
one beside put	-21			33
one beside run		6
one beside say b nobody	8
one beside set	-8			19
one beside sit	7
one beside take	27			-6
one beside undefined has other	10
one beside undefined is other			9
one beside use	-6			16
one beside work bpp nobody	-27			36
one beside work bpp other	18
one beside work bpp person	-12			26
one beside work i other	19
one beside work i person				-7
one beside work p person	21
one beside work pp nobody	-9			19
one beside work pp other	-15	5		10
one beside work pp person	-9			29
one buy imperative behind	-7	19
one buy past behind	-35	-11		-7	30	17
one cue back				6
one cue bought	-14	-13			25	14
one cue have	-8
one cue need		37
one cue used				11
one false	-11
one have present behind	8
one kept	-38		11	15
one left #	-15	12
one left G	27	-7
one left and	-45	33		5
one left as	19
one left be	-21	11	15
one left bring	-19	30
one left buy	-37		-5	-15	16	20
one left cut	16
one left get	-5
one left grab	-21	26
one left has			11
one left hit	7
one left in				13
one left is			9
one left it's	-5	13
one left leave	10
one left like	8
one left need	-7	22
one left put	-7			10
one left run		11
one left set	-15			23
one left that's	19
one left there's	31
one left up	11	-11
one left use	-38			41
one left with	-31	10		15
one more	9
one move present behind	8
one named before area	-16	23
one named before material	-22	19
one named before part	-9			25
one named before surface	5
one named before tool	-25		16
one named here material	-34			8
one named here part	-50	16		12
one named here tool	-6	25
one need modal behind	-11	10
one need owed behind	-9	26
one not ahead	20
one null none no	-10			14
one other copula before	-18	16		7
one other imperative behind	-39	33	7
one other modal behind		7
one other owed behind		6
one other past before		14		-18
one other past behind	-26		20
one other present behind	-4				9
one right #	-4
one right T	-5	14
one right and	-16	33
one right are	-31	22		13
one right before	27
one right in	-15		4	12
one right of	8
one right out	17
one right over				11
one right the	-14				13
one right up	-10			18
one say imperative behind	12
one says copula before	-18	16		7
one says imperative behind	-12	18
one says imperative behind not	-7		6
one says modal behind		15
one says none no	-10			18
one says none no not		10
one says owed behind	-5	21
one says past before	-17	26
one says past behind not	-31			37
one says present before	-9				8
one says present behind not	6
one sized	-31
one then move b		13
one then move pp	14
one then other b		14
one then other p		10		-12
one then undefined is	-15	13
one then undefined will	-18	8			17
one then work b		12
one then work pp	-20			28
one then work s					9
one true		20
one use past behind				6
one verb ask behind	11
one verb be before	-18	16		7
one verb bring behind	-17	32
one verb buy behind	-33			-8	22	17
one verb find behind	21
one verb get behind	-14		13
one verb go behind		-4		-6	18
one verb grab behind	-7	19
one verb leave behind	13
one verb need behind		20
one verb null no	-10			14
one verb owe behind	-24	10			21
one verb put behind	-19			29
one verb run behind		6		-8
one verb send behind		9
one verb set behind	-19			25
one verb use behind				6
one verb want behind	-7	9
one whole clause				8
one work past before	-26	21		8
one work past behind				35
opens boss	4
opens cause	8
opens clause area	-32		-10	43
opens clause count	-26			10
opens clause length	-20	10		19
opens clause one	-15	12
opens clause pack	-28
opens clause volume	-24
opens clause weight	-34	23		9
opens now	6
opens oh	19
opens ok	17
opens or		4
opens plus	-19	40
pack after have far	-21	15		-19
pack after have here	18	-8
pack after have sentence	-8	29		-12
pack after need here	-18	45
pack after need sentence		46		-19
pack after none far	-21
pack after none here	-17	33	-16
pack after none sentence	-22
pack after returned far	-14				9
pack after used far			19
pack after used here	-14	-24		30
pack after used sentence	-30
pack bag	15
pack beside buy		19
pack beside buy b nobody		19
pack beside eat	-19		-6	30
pack beside get			11
pack beside go				30
pack beside grab	-16	16
pack beside have			27
pack beside have b person			10
pack beside is	-30	21	10	-11
pack beside leave			18	-13
pack beside move p nobody				23
pack beside move p other				31
pack beside move p person				15
pack beside move pp other	24	-5		-5
pack beside need		11
pack beside need b nobody		20
pack beside need b other		22
pack beside nothing	-37
pack beside order	-8	15
pack beside other b nobody		34
pack beside other b other	-18	29	-13
pack beside other p nobody	-8	-12	21
pack beside other p other	-23	-21		42
pack beside other p person		-6	37	-22
pack beside other pp nobody	-25	-27	10	-22	31
pack beside pick	-25	9	-6	-16	24
pack beside put	-14	12
pack beside take	-44			22
pack beside undefined is other				-8
pack beside use				21
pack beside use b person	-23			25
pack beside use pp nobody				5
pack beside use pp person				27
pack beside want		20
pack beside work b other	-24	20	7	-7
pack beside work b person	4	-5
pack beside work bpp nobody	-33	27
pack beside work bpp person		-28		14
pack beside work pp nobody				13
pack beside work pp other	-17			19
pack beside work pp person	-10	-13		48
pack box	5
pack buy imperative behind		26
pack buy modal behind	-25	32
pack can	12			-5
pack cue back	-8	13
pack cue bought	-44	-9	-24		48
pack cue have	-6		69
pack cue need		63
pack cue used				5
pack flat	31	-13
pack have present before			-8
pack have present behind			27
pack kept	-4	-18	41
pack left #	-28
pack left +	-8			9
pack left G	-22		-7	35
pack left Q	-38	33	10	-38
pack left T	-19	-28		15	20
pack left about			6	-18
pack left and	-7	30
pack left bring	-12		10
pack left buy		21
pack left get	-51		42	-9
pack left grab	-13				10
pack left have	-30		41
pack left in	15
pack left is	-30	21	10	-11
pack left need		6
pack left of	21
pack left over	20
pack left take	-33			20
pack left there's	-31	-32	47	-22
pack left through				28
pack left up	-32	5	-6		15
pack left use				15
pack more	-31	55
pack move past before	-11		32
pack move past behind	-9		10	6
pack name flawed	-7
pack named before area	-6	-17		27
pack named before fixture	-13
pack named before part	22
pack named before surface		-12	7
pack named here material	-40
pack named here part				-15
pack named here surface	-10	32	-10
pack named here word	-53		11
pack need modal behind		-9	11
pack need owed behind		27
pack not ahead	-17	35
pack null copula before	-24	23	-17	5
pack null copula behind	-28	4	23
pack null imperative behind		14
pack null none no	-34	7
pack other imperative behind		24
pack other modal behind	-27	44		-9
pack other past behind	-18	-15	20		8
pack other present behind		-24		5
pack pointing		15
pack right #	-24
pack right Q	-11		-23	22
pack right T	-25		14
pack right and	-28	19
pack right are	-11	-10	26	-9
pack right be		-9
pack right for		17
pack right go	-32	-24	-25	47
pack right in			28
pack right is		-18	14
pack right leave			28
pack right no	7	-22	19
pack right on			23	-13
pack right say	22
pack right short	-30	38	-6
pack right the	-34	7
pack right to	-22	22	6	-15
pack roll	13		-5	-9
pack says copula behind	-21		12
pack says imperative behind	-27	69
pack says modal before			11	-15
pack says modal behind	-5	32
pack says none no	-28
pack says owed behind		41
pack says past before	-30		15
pack says past behind	-7			27
pack says present before		28	-20	-14
pack says present behind	-10
pack sized	-25	14
pack sold so false	-52
pack sold so true	-33
pack then move p	-32	-24	-25	47
pack then move pp			31
pack then other p		-11		9
pack then other s	5	5		-7
pack then undefined is			20
pack then work b			-9
pack tin	7
pack tub	39
pack use past behind				18
pack use present behind	-14			46
pack verb buy behind		10
pack verb go behind	-18			23
pack verb grab behind	-16	22
pack verb have before			-8
pack verb have behind			27
pack verb leave before			25
pack verb leave behind		-20	35	-18
pack verb need behind		5
pack verb null before	-24	23	-17	5
pack verb null behind	-29	9	19
pack verb null no	-34	7
pack verb order behind	-8	15
pack verb pick behind	-19			-14	37
pack verb put behind	-10	24		-7
pack verb take behind	-44		6	20
pack verb throw behind	-33			-6	20
pack verb use behind				25
pack verb want behind	-21	35
pack whole clause	-38
pack work imperative behind	-10	30		-5
pack work modal behind		5		-7
pack work past before	-21	-20		28
pack work past behind	-20			54
pack work present behind	-19	6
plural count	-26
plural one	-5
plural pack	-5
plural volume	-41		13	10
plural weight	-33	24		9
pointer after need here	18	-5
pointer cue used				13
pointer name flawed						6
pointer named before material	-8			20
pointer named before part	26
pointer right #				11
pointer says past behind	-16			17
pointing	-34	6		17
right &	-29	33
right (	-6	18
right ( Q	10
right + Q	-26	7		11
right /	-14			12
right / G	-10	18
right @		11
right Q #	8
right Q Q	17
right T and	16
right a	10
right above the	8
right across	10
right after	15
right already			8
right already #	15
right and G		14
right and Q	-10	11
right and a	-17	6
right are Q	9
right are cut	11
right are glue	-12			21
right are hang	-12			17
right are in	7
right are on				14
right around the				6
right arrive			16
right at all	6
right back		9
right back on		13
right be Q	4
right below	11
right bend	11
right bend #	20
right both	13
right box	-18			-7		18
right bring	5
right buzz	6
right by G	11
right can	-11	12
right can't		9
right change				12
right come up	6
right crack #		5
right cup		14
right cut				13
right cut #				15
right dead	14
right didn't	14
right do #			13
right don't	-5			21
right each	-17	-5		28
right fit	-6			13
right for G		7
right for that	-8	5
right glue	-11			24
right glue #				15
right go #	-21	-11		34
right go Q	16
right go down	14
right go on	-5			15
right go through	12
right have to						8
right head		15
right here			27
right here #	-5		25
right in #	-12			51
right in Q	12
right in it				27
right in my	-13	-9	28	-14
right in there	20
right is crack	5
right is do	14
right is fine	5
right is go	-21	-5		31
right is gonna	-8	17
right just	5
right leave			36
right leave #	-8		40
right leave from			15
right leave on			4	-7
right leave over			25
right lose	4
right miss #		14
right more		13
right more #	-18	29
right mount				7
right mount #	-6			20
right my	9
right need #	-4	21
right need Q	13
right never	-4			13
right next		5
right no #		-20	18
right now #	11
right of Q			5
right of that		12		-5
right of them	-22			31
right off #	16
right on #				15
right on G			8
right on Q	19
right on T		5
right on in	12
right on order	-20				34
right on site	-8	-15	26	-19
right on that	9
right open	9
right or	9
right out #	13
right peel	-11	17
right replace	-5			14
right replace #	14
right say Q	9
right scratch						8
right short		24
right short #		28
right should	-14	22
right since				5
right sit			10
right so				8
right so that				8
right stain	-14			12
right stick #	5
right still			17
right still in		-7	15
right still to	23
right strip			5
right strip #	-4		12
right swap				5
right tear #	6
right the Q	-33	18			20
right then	5
right there		10
right through	6
right to Q	20
right to go	12
right to wall	6
right turn	-9		18
right underneath	7
right up #				12
right up T	8
right up to	19
right use				17
right use #	-16			25
right want the	6
right when i			6
right where the				9
right wire				18
right wire #				8
right with G	5
right with a	18
right with me		13
right without	14
right1 &	-29	33
right1 (	-6	18
right1 /	-14			12
right1 @		11
right1 a	10
right1 across	10
right1 after	15
right1 already			8
right1 arrive			16
right1 back		9
right1 below	11
right1 bend	11
right1 both	13
right1 box	-18			-7		18
right1 bring	5
right1 buzz	6
right1 can	-11	12
right1 can't		9
right1 change				12
right1 cup		14
right1 cut				13
right1 dead	14
right1 didn't	14
right1 don't	-5			21
right1 each	-17	-5		28
right1 fit	-6			13
right1 glue	-11			24
right1 head		15
right1 here			27
right1 just	5
right1 leave			36
right1 lose	4
right1 mark.	-4	6
right1 more		13
right1 mount				7
right1 my	9
right1 never	-4			13
right1 next		5
right1 open	9
right1 or	9
right1 peel	-11	17
right1 replace	-5			14
right1 scratch						8
right1 short		24
right1 should	-14	22
right1 since				5
right1 sit			10
right1 so				8
right1 stain	-14			12
right1 still			17
right1 strip			5
right1 swap				5
right1 t area.	16
right1 then	5
right1 there		10
right1 through	6
right1 turn	-9		18
right1 underneath	7
right1 use				17
right1 v buy.				6
right1 v use.				17
right1 wire				18
right1 without	14
right2 about	20
right2 again	7
right2 all	5
right2 anything		12
right2 bad				15
right2 before	17
right2 behind	6
right2 ceiling		10
right2 come	7
right2 cut	6
right2 deliver	-30				6	8
right2 drop	8
right2 each	-16	31		-4
right2 extra	-23		16	-6
right2 flash	4
right2 for	-8	31
right2 front	-19	-10		28
right2 glue				13
right2 gonna	-5	14
right2 hang		-13
right2 has	7
right2 here	5			-5
right2 hinge	4
right2 into	6
right2 is	6
right2 keep	12
right2 kitchen		12
right2 leak	19
right2 leave	-7
right2 loose			7
right2 my	-4		26
right2 need		9
right2 new	14
right2 notch	11
right2 of	-4
right2 old	25			-4
right2 ones	-28	17	14
right2 only	10
right2 open				13
right2 order	-19				30
right2 over			14
right2 pack					7
right2 pipe	5
right2 pull	11
right2 put	-7
right2 read	11
right2 run	23
right2 send	-11	17
right2 set	14
right2 side				14
right2 site	-8	-15	26	-19
right2 so	16
right2 split	-38	15		24
right2 still	-14	8		9
right2 strip	9
right2 t finish.		6
right2 t role.						5
right2 t tool.	20		-7
right2 their			15	-9
right2 them	-18			29
right2 they	8
right2 this	8
right2 through	6
right2 to	7
right2 under	12
right2 v buy.	-23			-13	33
right2 v say.	-14			15
right2 v see.	11
right2 wait		9
right2 we	4
right2 where	5
right2 white	-24	31
right2 you	9
right3 about	10
right3 across	15
right3 and		6
right3 around	-13			19
right3 backwards	6
right3 basement	-11		18
right3 both	11
right3 bottom			5
right3 ceiling	15
right3 closet	7	-6
right3 corner	11
right3 counter		-7
right3 deep	11
right3 den	18			-5
right3 em	8
right3 end	7
right3 every	5
right3 flat	18
right3 floor	8
right3 front	9
right3 get						14
right3 guy	13
right3 hall	12
right3 hallway	17
right3 hang	14
right3 has		11
right3 have	-6	13
right3 house	10
right3 if	-7	16
right3 kitchen	15
right3 last	5
right3 long	-7	7
right3 me		-8		18
right3 new		7
right3 no		-16		6
right3 now				10
right3 off	10
right3 only	5
right3 open	12
right3 outside	5
right3 over	23			-12
right3 proud	7
right3 second	15
right3 set	11
right3 shop	-14		9
right3 short	6
right3 split	8
right3 stairs			7
right3 stand	-13			19
right3 steps	14
right3 still	22
right3 that		6
right3 them	-6	16
right3 though	-27	16		16
right3 truck	-26	-16	24	4
right3 van	-20	-7	31	-13
right3 walk	14
right3 wall	20
right3 way					9
right3 when	7
right3 where	21
right3 which	33	-21
right3 wrap	-11	18
sold so false	-13
sold so true	-37
sort area	-6			19
sort pack	-18
sort volume	-38
sort weight	-8
then arrive			8
then arrive pp			13
then bag		10
then bag b	-5	13		-4
then bend	11
then bend pp	13
then bolt	6
then bolt pp	6
then book	8
then bow	21
then box s	-10			-6		17
then burn	4
then buy	-9		-6		10
then buy b	-8			-4	23
then buy pp	-24	-16	-6		28
then buzz	6
then call	5
then can't		7
then can't will		7
then change				12
then complete	10
then cup		14
then cut				7
then cut bpp				11
then didn't					18
then didn't will					18
then do b	-7
then doesn't		7
then doesn't will		7
then don't				7
then don't will				7
then drop	15
then drop pp	16
then eat p		5
then fit	-6			13
then get b	-6	15
then get s	4
then glue	-16			29
then glue pp	-16			29
then go b	10
then go i	6
then go p				26
then hang	14
then head		8
then head b		11
then keep	10
then land b	20
then leak	5
then leave			19
then leave pp			24
then leave s				17
then look	10
then measure i			9
then mount				7
then mount pp				7
then move p				26
then move pp			22
then need pp	-17	41
then open b	22
then order	-10				39
then order b	-19				39
then peel	-9	20
then pull i		12
then pull pp	9
then put bpp		7
then replace				10
then replace pp				10
then run bp	19			-4
then say b	7
then say pp				21
then scratch	13	-6
then scratch b	25	-12
then seal				11
then send	10
then send pp	10
then should	-12	6	9
then should will	-12	6	9
then show b	16
then sit			16
then sit i			19
then snap	-7	17
then snap pp	-7	17
then sound	13
then sound b	17
then split	17
then split bpp	17
then squeak	9
then stain	-14			12
then stain pp	-14			12
then stand	-9			17
then start	11
then stay s		7
then strip b	-21		20
then strip pp	19
then swap pp				13
then take p	6
then turn			7
then turn b	-14		20
then turn pp	7
then use				17
then use pp				25
then wait	12
then walk	14
then walk b	14
then want b	13
then want pp	-20	24		-10
then weep	5
then wire				18
then wire pp				18
then won't	6
then won't will	6
then work bp	19			-4
unit L		-14	5
unit bag	-39			11
unit bottle				-16
unit box	-22
unit bucket	-4
unit bundle	-14				8
unit can	-37			20
unit case	-26		22	-7
unit coat	55
unit each	-38	25
unit from said	-37
unit gal	-33
unit kit	-30			11
unit lb		13
unit length	-31	-12	6		14
unit m	-4
unit pack		20
unit pail	-29			27
unit pair	-26	6		8
unit qt	-48	6
unit roll	-53
unit row	39	-12
unit sheet	-24			21
unit sleeve	-25	19
unit sq ft		6
unit sq m				9
unit stick	-57	27
unit tin	-39	5	10	6
unit tub	-22	13
unit tube	-41	22
unit yd	-32	39
use buy before	-19				16
use buy behind		8
use buy imperative behind		20
use buy modal behind	-9	21
use buy past before	-23	-12			23
use buy past behind	-11	-29		-5	50
use move modal before	8
use move modal behind	11
use move owed behind					10
use move present behind	5
use need behind		13
use need owed behind		14
use need past before	-15	37
use need past behind	4
use need present behind		10
use null modal before	18
use other imperative behind		24
use return behind	-27	-9		-7		34
use say modal behind	13
use say past before	7
use say past behind	14
use see modal behind				7
use use before	-26			34
use use behind				16
use use past before	-26			34
use use past behind				20
use use present behind				32
verb adjust past	6
verb arrive before			9
verb arrive past	-5		11
verb ask imperative	4
verb be past	8
verb bend before	19
verb bend past	19
verb bolt past	-9			16
verb borrow past		13
verb bring behind	-5	17
verb bring imperative		19
verb bring modal		19
verb bring owed	9
verb bring past	-33	-23	17	-15		30
verb bring present	-6	13
verb burn behind	-8			29
verb burn past	-8			29
verb buy before	-31	10	-5		13
verb buy behind	-6
verb buy imperative		33
verb buy owed	-16	25
verb buy past	-23	-14			29	8
verb call present	6
verb can behind				15
verb can modal		-6		9
verb cap behind	16
verb cap past	17
verb change before	-5			14
verb change behind	-11			25
verb change past	-19			31
verb change present	-12			22
verb check present	5
verb chip past	12
verb clear behind	-10			16
verb come behind	13
verb come owed	4
verb come past	15
verb count behind	14
verb cover before	14
verb crack before	-8	5
verb cut imperative	5
verb ding behind	10
verb ding past	9
verb do before			5
verb do imperative	-23		20
verb do past				17
verb doesn't modal	5
verb drill behind	10
verb drill past	9
verb dry before	7
verb dry modal	8
verb dump before		17
verb dump present		10
verb ease behind	6
verb ease past	6
verb falta behind		10		-4
verb falta owed		10		-4
verb feel behind	5
verb feel modal	5
verb figure behind		17		-4
verb finish behind	8
verb fit before	-7			14
verb fit behind	-6			20
verb fit present	9
verb float behind				12
verb forget behind	-7	15
verb fre behind			18	-4
verb fre past			16
verb get imperative		41
verb get modal	7
verb get owed		7
verb get past			15
verb give behind	7
verb glue before				8
verb glue owed	5
verb glue past				8
verb go past				38
verb guess behind	-10	21
verb guess present	-16	25
verb hang behind				21
verb hang past				26
verb has behind	5
verb hit imperative	9
verb hit past				11
verb hold behind	6
verb hold past	9
verb hook modal	7
verb i'll behind		11
verb i'll modal		11
verb know behind			5
verb land behind	5
verb lay behind	-23			16
verb lay past	-24			24
verb leak before	8
verb leave before			16
verb leave imperative	10
verb leave past			25
verb leave present	8
verb like modal	4
verb lose behind	7
verb lose past	11
verb make imperative	-5	12
verb mark behind	5
verb mark past	5
verb miss before	5
verb miss behind	-26	34
verb miss present		6
verb mix behind	-16	-7		31
verb mount past	-32			40
verb move before	6
verb move modal		9
verb move past	5
verb move present	-4		16
verb nail before	8
verb need behind		19
verb need owed		17
verb need past	-12	27
verb open before	9
verb open past	12
verb order behind	-6	20
verb order imperative		17
verb order modal		11
verb order past		-6			28
verb owe behind					8
verb owe present					8
verb paint past	9
verb patch behind	10
verb patch past	11
verb pick behind	-6				20
verb pick imperative		27
verb pick past		-14		-8	46
verb plane behind	4
verb prime behind	16
verb prime imperative	19
verb pull present	11
verb push behind	7
verb push modal	9
verb put modal		10
verb put past				20
verb remind behind	5
verb remind imperative	5
verb replace before				10
verb replace behind				17
verb replace past				25
verb return behind	-27	-9		-7		34
verb rip past	5
verb run imperative		8
verb sand behind	13
verb sand imperative	8
verb sand owed	12
verb say modal	22
verb say past	7
verb scrape behind	11
verb scratch past						7
verb screw behind				8
verb screw past				7
verb see modal				11
verb send before		13
verb send modal		12
verb send past						16
verb send present	6
verb set behind				15
verb set past				15
verb shim before	11
verb shim behind	18
verb shim past	20
verb show behind	9
verb show present	7
verb silicone owed	5
verb sister past				18
verb sit owed		-10
verb slide behind	4
verb snake behind	12
verb snake past	13
verb snap past	-21	34
verb splice behind	10
verb stagger behind	-7			15
verb stagger past	-5			13
verb stain before	-21	11		10
verb stick behind	15
verb stop behind	11
verb stop past	6
verb strip before	23
verb strip past	19
verb swap before	-13			28
verb swap past	-9			32
verb take before		7		-6
verb take behind	-6					15
verb take imperative			12
verb take modal		23		-20
verb take past	-16					28
verb tape behind		6
verb tape past	-5	6
verb tell past	5
verb test behind	10
verb test past	7
verb throw imperative					7
verb throw past	-6			19
verb tile past	10
verb trim past	7
verb try behind			9
verb try imperative	-25		18
verb turn behind	22
verb turn past	12
verb use before	-26			34
verb use behind				16
verb use past				29
verb use present				32
verb wait before	7
verb wait present	7
verb want before		5
verb want modal	-11	17
verb want past		10
verb want present		10
verb wire before				14
verb wire past				12
volume after have sentence	-23	37	-12	-10
volume after need far		-13	26	-7
volume after need sentence	-22	35	-4
volume after none far	-30		9
volume after none sentence	-28			24
volume beside get	-10		11
volume beside have	-16		34
volume beside have b person	-13		29
volume beside need		13
volume beside need b person	-11	37
volume beside nothing	-30		11
volume beside other b nobody	-5	13
volume beside other p person	-6	-7	27	-6
volume beside use				26
volume beside use pp nobody				21
volume beside use pp person				18
volume cue have	-31		61	-5
volume cue need	-4	16
volume cue used	-35			26
volume flawed	-22	16
volume have present behind	-16		34
volume kept	-22	7	17	-19
volume left #	-24
volume left and	-33				16
volume left get	-6		18
volume left have			19
volume left need	-7	32
volume left use				12
volume move past before	-25	-7	13	11
volume named before material	-5	-10	22
volume named before word	-37	19	18	-22
volume named here finish	-26		17
volume named here material	-53	12
volume named here word	-17	13	-16	8
volume need owed behind		12
volume null copula behind	-23	6	16	-8
volume null none no	-16		9
volume other imperative behind	-5	13
volume other past behind	-20	-16	20	-15	14
volume right #	-35			9
volume right and	-22	27
volume right leave			27
volume right of	-29	40	-13	-19
volume right on	-10	-6	21
volume says copula behind	-33		9
volume says imperative behind	-26	47
volume says none no	-16		9
volume says owed behind		12
volume says past before	-28			9
volume says past behind	-29			19
volume says present behind		-18	12
volume sold so false	-11
volume sold so true	-17		17
volume then move pp			27
volume use past behind				26
volume verb get behind	-10		11
volume verb have behind	-16		34
volume verb leave before	-4		23
volume verb need behind		13
volume verb null behind	-23	6	16	-8
volume verb null no	-16		9
volume verb use behind				26
volume whole clause	-13	9
weight after need sentence		22		-6
weight after used sentence		-11		6
weight beside nothing	-14	12
weight cue used	-24			31
weight left #	-34	23		9
weight left at	19
weight name flawed	-14			8
weight named before material	-7			16
weight named before word	-5	-6		16
weight says copula behind	18
weight says past behind	-9	-16		20
weight sized		16		-18
weight sold so false	-12	10
who nobody owed		22
who nobody present			29
whole false			31
whole true	-10
`;
