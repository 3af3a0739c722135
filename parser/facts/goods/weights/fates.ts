/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after &		7
after (	-6
after )	-15	12
after +	-13
after /	-23
after 1	-28	17	16
after =	12
after above	5
after acclimate			14
after actually	18
after add				14
after against	6
after air	30			-7
after allen	7
after am				9
after american	-21	31
after anybody's		8
after backsplash				7
after backwards	4
after bag	-12
after balance			15
after balcony	-11		19
after bang		-5		18
after bathroom				11
after beat	7	4		-12
after belly	14
after bench		-8	7
after beside	24			-6
after better	-12	19
after bleed	7
after bleeding through		8
after blue	-19	11	16
after board	18
after bolt				8
after bone	-14	12
after bought far modal	13
after bought far past	-7					14
after bought here					32
after bought here and					12
after bought here none	-6	-26	-7	-18	36
after bought here past	5
after bought here present	-7				20
after bought here run-on	11
after bought here start	-5	-7		-11	30
after bought sentence					31
after bought sentence and	-5	-10			22
after bought sentence comma	-7	-15		-19	50
after bought sentence imperative		4
after bought sentence none	-13	-25		-26	52
after bought sentence past	-20			14
after bought sentence word	-5	20
after bow	24
after bowl	15
after box	-8
after bridge	10
after bring		14
after brown		7
after brush	-21		19	-5
after bug	8
after bury	21
after bust	5
after butt	-4			12
after buy	-34	33
after buzz	20
after came off	-10		24
after carton	-18		11
after case	-21		15
after cellar			13
after centers	17
after chair				5
after change	-8			24
after channel	8
after chatter	24
after chirping	21
after clamp	-15	22
after click			6
after coat	9
after column	17
after coming off	19
after cope	-13	15
after corrosion	24
after counter		-17
after crook	19
after cross threaded	9
after crosses		5
after crumbl	9
after crumbling	-15	16
after crush	8
after ctr	19
after curl	7
after daylight	27	-15
after days	16
after deal	5
after deck	7
after deep	8
after delivery		6
after different	7
after dig		4
after dont		10
after doorway	8
after double		9
after dresser	8
after drum	7
after drywall	31
after duct	16
after dust	5
after each				8
after early		18
after else		22		-7
after empty		7
after ends	8
after enough	5
after entry	17
after ever	19
after everything	12
after extra	-23		11
after eye	18
after face	17
after factory	-9	16
after far	-11			22
after feel	5
after fell	-16	14
after fell off	-6	14
after fence			6
after figure	14
after fireplace				7
after first coat	-8			22
after fit				8
after flip	8
after flood test	10
after floor's			13
after floors	6
after foot	15
after fourth	15
after frame		7
after frost	-9				16
after garage			22
after gray				10
after green				5
after grout	17
after gurgles					8
after hair	5
after hand			17
after happen		14
after hard	18
after hasn't		11
after have far owed		16
after have far word	14
after have here comma	26
after have here modal	10
after have here none			20
after have here owed	9
after have here past	17
after have here start	-6		17	-14
after have sentence comma			23
after have sentence imperative		26
after have sentence modal	-10	29
after have sentence none			25	-9
after have sentence word		46
after haven't	-19	14
after here			14
after hers	-6			14
after him						7
after hollow	24
after home	-26	8	25
after hot				8
after hub				13
after i'd	15
after inch	-7			12
after inspector	-12	16
after install				14
after into				6
after job	-16
after joint			6
after kennels					8
after kicks out				7
after kid			10
after kind	-13	19
after kink	-5			16
after kit		13
after know	5
after lab	-15	23
after label			11
after lacquer		11		-5
after ladder	22	-15
after lane	16
after later			13
after latex	15
after laundry	6
after lean	-13	9
after leaning			18
after least	15
after left hand			11
after length	6
after let go	16
after lid		18
after linen closet		8
after lip				8
after list		17		-15
after lite			15
after little	-8		7
after live	11
after lol	7
after lot			7
after lunch	9
after maple	5
after mark	15
after mask	28		-8
after mat	16
after mate		16		-6
after maybe	4
after mind	25
after mine	-12	21
after minimum	32	-25
after miter	8
after mould		7
after mount				11
after mud		10
after mud room				6
after mush				13
after ne	19
after nearly	4
after need far word	16
after need here modal		15
after need here none	-17	52
after need here past	23
after need here present		20
after need here start	-17	31
after need here stop		21
after need sentence and		5
after need sentence comma		60
after need sentence imperative	8
after need sentence none		91
after need sentence owed	7
after needle	13
after neutral	21
after nice	-13	10
after nobody	16
after none far owed		7
after none far run-on	7
after none far word	6
after none sentence stop					7
after north side	6
after nowhere				10
after nursery	22
after off center		-13		16
after office	-19
after oil	8
after ones	-21	24
after oot	7
after order	-12				41
after others	-13			18
after oughta	5
after outta				14
after painted shut	16
after painter		7
after pairs	7
after parking lot	15
after part's				8
after past	11
after peel		6
after pick	-5	19
after pieces	18		-5
after pine	-10			10
after plate		-5		9
after please		20		-5
after plenty	-35	21	17
after plumb				24
after pocket			20
after point	8
after popcorn	-16	-7	31	-7
after powder room	-15		8
after pretty	-5			14
after profile	27	-18
after promise		11
after pt	-14			18
after push	15
after putty	-17		10
after quit	9
after r	11
after rain	24	-10
after rains	-4	14
after re	7
after reach					13
after real	-7		22
after red	-10		9
after rental	9
after replace				14
after require	9
after reset			11
after rest	-12			13
after returned far comma	-6	17
after returned far none	-5
after returned far owed	-17	6
after returned far past	-13		10		9
after returned far present			14
after returned far stop			5
after returned here and	9
after returned here past	12
after returned here start	8
after returned sentence and	-28				20
after returned sentence comma		-14		-19	4	27
after returned sentence past	-11			-6	35
after ridge	-11	-15	8	10
after rod		6
after roll			11
after rooms	-7		9
after roots	6
after rough opening's	-16					8
after round	6
after rub	13
after run's	8
after rusted through	14
after s		-12		12
after saw	9
after scrape	15
after scratch	9
after screen	5
after scribe	4
after seams				14
after seat			11
after second				11
after second coat	17
after second floor	-6			15
after see		5
after seize	9
after shed	-39	8	10
after sheet	-12			6
after shim		4
after shoot	8
after should	-10
after shy	10
after signal's				5
after silver	-5	15
after site	-20		35	-17
after slam	10
after slope	13
after small	12
after smell	11
after some		16
after sorry	5
after sound	12
after spare	-39	-4	43
after spins	8
after spray	13
after stack				5
after stairwell	-23		20		7
after start	4
after station	-11
after steps			10
after still			7
after stock	-27		11
after store	-11	-16	9	-6		7
after street	7
after study			7
after stuff	-12	25
after sub	-21	-6		28
after supposed					8
after sure	-14	20
after sweat		5
after swing						10
after tacky	-4		13
after tag	-7	11
after talk				7
after tank	11
after tap	15
after tell				11
after thank		-6		18
after the kid				4
after the yard		-6				13
after there's		15
after they're	12
after they've	20	-5
after thing					18
after tile guy	-5	14
after tin	-20			4
after toaster	9
after too big	25
after too deep		12
after too far	-5			13
after too high	26	-13
after too long	-5	12
after too short	18
after top edge		16		-8
after touch	4
after trade		16
after trailer	-12	-28	25
after trim	-25	29
after truck			9
after tube	12
after tubes		12
after twist	14
after upside down	7
after use				17
after used far owed		9
after used far run-on	10
after used here comma				35
after used here modal		-12		8
after used here none	-21	-13		47
after used here owed		-13	9
after used here start	6
after used sentence comma				6
after used sentence none				34
after utility	10	-5
after van	-42		59
after wait	9
after weatherstrip	5
after weight	9
after well	5
after wet	15
after whistling				15
after white	-9	22
after wind				8
after winter	8
after would		8
after wrap	-14	7
after wrong						11
after yet	-9	14
again need	45	-42
again returned					21
again used			34
ahead &	-26	19
ahead '	14
ahead )	4
ahead +	-16
ahead @	13
ahead acclimatising	14
ahead adjust	8
ahead against	5
ahead air	5
ahead alarm	6
ahead almost			6
ahead american	10
ahead anchor	-5		15
ahead anything				6
ahead around	4
ahead arrive	-10		12
ahead b	15
ahead baby	5
ahead backsplash		8
ahead bad	15
ahead balcony		11
ahead ball	15
ahead band		7
ahead basement bath	-12			19
ahead bc	18
ahead bead		5
ahead bed	10
ahead bend	6
ahead better	12
ahead bin		21
ahead bled	7
ahead board	-15	5
ahead boards	12
ahead bolt				13
ahead bond		17
ahead book			11
ahead bore	-10			21
ahead both	11
ahead brass	-5			11
ahead bring		17
ahead build				6
ahead bulkhead	-14			18
ahead burn				11
ahead came off	11
ahead cap	-13			20
ahead care	18
ahead carry		7
ahead channel	7
ahead chrome	-21	27
ahead chuck		8
ahead clamp				6
ahead client	25	-8
ahead clip	-6			11
ahead code	22	-6
ahead coffee	13
ahead cold	10
ahead cold side's	13
ahead confirmats	-17	28		-6
ahead contact	-13		15
ahead cope	13
ahead corridor	5
ahead crawl				11
ahead crete	22			-11
ahead crown					8
ahead crush	7
ahead cure				8
ahead dad	12
ahead damp	15
ahead date				-8
ahead deep	4
ahead dial	22			-5
ahead ding	7
ahead dip		7
ahead disconnect	25			-9
ahead dump				5
ahead each	13
ahead early				7
ahead eat				30
ahead edges	-9
ahead eggshell	-13	22
ahead either	15
ahead electric	4
ahead else	4
ahead enough			16
ahead ensuite	5
ahead entry	13
ahead everything				7
ahead exhaust	11
ahead falls	5
ahead falta		9
ahead fell		19	-8	-10
ahead fence	-11			21
ahead fifth				8
ahead figure		18
ahead finish				7
ahead fire	5
ahead first	-7
ahead first coat				8
ahead fish	6
ahead flaps	10
ahead flash	6
ahead flexible	-18	25
ahead flood test			6
ahead foam				24
ahead foil			9
ahead footings	12
ahead fre			11
ahead fresh	-5
ahead front				5
ahead front room	16
ahead fronts	13
ahead gable	19
ahead gal	-17					22
ahead garbage	9
ahead gary			13
ahead god		-5
ahead grab		4
ahead gray	-11		13
ahead green	-34	32
ahead grunt	-13		6	11
ahead guess		14
ahead guy	7
ahead half			6
ahead hall	5
ahead hall closet	-15		21
ahead hard				7
ahead hasn't	14
ahead haul	7
ahead haven't		17
ahead height	19
ahead height's	16
ahead here			16
ahead high	9
ahead hook				10
ahead how	-9		7
ahead hub	4
ahead i'd		26
ahead i've			24
ahead inch	-19	24
ahead install	-4			12
ahead instead	18			-9
ahead insulate	7
ahead itself	19
ahead jacket	5
ahead jess				7
ahead job		-5		19
ahead joker	27			-17
ahead kind	6
ahead kindly	-13	19
ahead knit	6
ahead l	19
ahead lady	23			-8
ahead lady's	7
ahead landlord	8
ahead laser	20	-11
ahead latch	5
ahead laundromat	21			-4
ahead laundry	7
ahead layer	-12	-5		8
ahead lean	6
ahead legs	-21	11		11
ahead let go	21
ahead library				10
ahead linen closet	-13			13
ahead lip				10
ahead list	17
ahead lit	-8			17
ahead little	11
ahead living room	9
ahead loop	5
ahead lord	7
ahead luis	21
ahead machine	18
ahead main	4
ahead mate	-30	33
ahead maybe	-6		29
ahead me		8
ahead moisture	15
ahead moisture's	14
ahead mortar	11
ahead mount				13
ahead mouse				10
ahead mr	4
ahead much				7
ahead muck	-6			13
ahead mudd	6
ahead nail holes				4
ahead nearly		-5		13
ahead need		15
ahead neighbor	28		-15
ahead nest				12
ahead next	7
ahead niche		5
ahead nick	13
ahead noon		12
ahead nursery	-14			27
ahead nursery's	15
ahead oak	-14			17
ahead once	5
ahead one's	15
ahead ones	13
ahead opened up	7
ahead order		11
ahead out of plumb	16
ahead outta	17
ahead owe		14
ahead own	11
ahead p	-18			16
ahead pack				12
ahead painted shut	6
ahead painter	9
ahead paper	-7	18
ahead part	16
ahead patio	5
ahead pay	19
ahead peel	7
ahead pick					7
ahead pile			15
ahead pin	-11			11
ahead place				4
ahead plan	13
ahead plenty			14
ahead plumb	10
ahead plus	-20	9	11
ahead pool	6
ahead pump				9
ahead push	7
ahead putty	8
ahead qt	-48	52
ahead quit	5
ahead r	-6	19
ahead rain		-8	11
ahead rake	16
ahead rate	15
ahead read	6
ahead ready	-11	13
ahead rebuild	-26			33
ahead red	5
ahead redo	-4
ahead rehang				8
ahead relay				6
ahead remains	6
ahead repair	-29			37
ahead replace				15
ahead require	-14	10	9
ahead rest	-27		29
ahead restroom	4
ahead return						18
ahead reveal's	6
ahead ridge	14
ahead ring				9
ahead rink		8
ahead room	9
ahead roots	13
ahead rotten		9
ahead round	12
ahead rubber	-10	29		-9
ahead rudy	5
ahead run's	23
ahead runner	23
ahead s	4
ahead sage	-30	30		-9
ahead salon	9
ahead sander	-5	18
ahead scrape	4
ahead screed	17
ahead screwdriver	17
ahead scuff	4
ahead second	-6	11
ahead second floor's				8
ahead send						7
ahead setback	26	-16
ahead sewing room	-29	-24	36
ahead shed				9
ahead ship	8
ahead shoot			11
ahead shop	-14
ahead short		40
ahead shot	10
ahead shove	-6		20	-10
ahead shut	4
ahead shy	-13	26
ahead sinking	-11			16
ahead slab	24
ahead slid	-30			34
ahead slip		4
ahead snake	9
ahead soft	-11	5
ahead soft close	12
ahead something	-13			20
ahead sound	20
ahead spare	-14		16
ahead special	7
ahead spend	-22			33
ahead spin	19
ahead splash	18
ahead squeak				10
ahead stack		-7		7
ahead stagger	-6			13
ahead stairs	-16			23
ahead staple	5			-13
ahead stay			14
ahead steam				11
ahead step				4
ahead steps	31
ahead store	-25	12		-19	23
ahead strap	-4
ahead strike		12
ahead stub				12
ahead stub's	-13	18
ahead stuff		5
ahead super	8
ahead supplier	-8
ahead swear	6
ahead sweep	21	-12
ahead sweet	6
ahead swing		14
ahead t	4
ahead tank's	7
ahead temp	13
ahead that'll	-23	12		-14	18
ahead the lady's	10
ahead thick	-15			29
ahead through				6
ahead til		4
ahead tile guy		7
ahead time	-7
ahead tin	-9	18
ahead touch up	5
ahead trip	12
ahead tube	-11			17
ahead tubes		6
ahead undercut	7
ahead unopen	-13					21
ahead use				14
ahead van	-21	-5	32	-9
ahead walk					5
ahead wall's	8
ahead walls	8
ahead walnut	11
ahead water proof			7
ahead we'd	-15	23
ahead we'll	-11	27
ahead we've	-5	-18	23	-5
ahead weatherstrip	16
ahead weight	16
ahead weld			17
ahead were	22
ahead white	-19	16	9
ahead whitlock's	17
ahead who	9
ahead whoever	5
ahead will		6
ahead wind		13		-13
ahead wire	5
ahead within	10
ahead without	-21	18
ahead wrong	5
ahead wrote	8
ahead you're		16
any	247	-105	-163	-104	-315	-342
area after none far	34			-25
area beside nothing				27
area cue need	-28	31
area cue used				5
area flawed	11
area left #	-19			43
area left about	27
area name flawed	-6			20
area named before surface	5
area named before word	-7			20
area null none no				5
area right #	-18			23
area says none no				5
area says past before			-5	12
area says past behind				7
area says present behind	22
area sold so false				8
area sold so true	-12	14
area verb null no				5
area whole clause	-36			47
bare beside add	10
bare beside bag	-7			15
bare beside bolt				9
bare beside box		8
bare beside bring		4
bare beside buy	28
bare beside buy b nobody		5
bare beside buy b other	18
bare beside buy b person	-6	14
bare beside buy pp person	8
bare beside cap	-8			16
bare beside clip	18
bare beside drive	16
bare beside eat	8
bare beside figure	15
bare beside flip	6
bare beside give	4
bare beside grab	21	-9
bare beside guess	8
bare beside have b nobody	23
bare beside lay	4
bare beside measure bp nobody					7
bare beside measure bpp person				10
bare beside move i nobody	5
bare beside move p nobody	9
bare beside move p person	6
bare beside need s nobody		5
bare beside order		7
bare beside other i nobody		7
bare beside other pp nobody					8
bare beside pack	-5
bare beside pick					7
bare beside place	4
bare beside plug				5
bare beside replace				6
bare beside return	-23		13			14
bare beside save			6
bare beside screw	5
bare beside sign	-17		21
bare beside stack	17
bare beside supply	-8	14
bare beside throw	11
bare beside use b other	5
bare beside use b person	20			-8
bare beside use pp person	8
bare buy imperative behind		5
bare buy owed before	-17	26
bare buy present behind	21	-11
bare left &	-11	11
bare left +	-6
bare left all	10
bare left already	14
bare left buy	30	-12
bare left eat	8
bare left half	-8		16
bare left i'm	9
bare left inside	9
bare left lay	11
bare left miss	5
bare left only	5
bare left or		6
bare left order		8
bare left owe	7
bare left pack	14
bare left prime	-8			14
bare left replace	-6			13
bare left right	-7	14
bare left screw	13
bare left send	10
bare left short	20
bare left sit		8
bare left stick	6
bare left take						23
bare left that	7
bare left that's	16
bare left through	14
bare left we're	13
bare left without		5
bare list have	6
bare list need		6
bare list used	7
bare measure modal before						9
bare measure modal behind	-5	17
bare move owed before			8
bare need modal before	8
bare need past before		8
bare right &	-13	25
bare right (						13
bare right +		14
bare right box	8
bare right bring	4
bare right clip	6
bare right complete	10
bare right fix				10
bare right gonna	4
bare right good	11
bare right hasn't	-7	13
bare right here			11
bare right order	20
bare right pack	-8	16
bare right peel	-5	12
bare right replace	22
bare right roll	-9		18
bare right send	4
bare right shot		12
bare right stuff	-4
bare right they	-5		7
bare right wire	8
bare then buy b	-5				42
bare then buy pp	21
bare then measure bp	9
bare use present behind	24			-8
bare verb add behind	10
bare verb box behind		13
bare verb bring before			5
bare verb bring behind	-5	6
bare verb cap behind	12
bare verb change before				7
bare verb clip before	6
bare verb clip behind	6
bare verb crack before	-8
bare verb deliver before			4
bare verb drive behind	13
bare verb dry before			10
bare verb figure behind	16
bare verb fix before				6
bare verb guess behind	7
bare verb lay before	12
bare verb lay behind	7
bare verb level behind				5
bare verb like behind	4
bare verb miss behind	6
bare verb patch before	-16			19
bare verb pick behind					8
bare verb place behind	16
bare verb pour behind		5
bare verb put before	8
bare verb remind behind	7
bare verb replace before				9
bare verb save behind			6
bare verb screw behind	5
bare verb show before	-5		8
bare verb silicone before	8
bare verb silicone behind	4
bare verb sister behind				6
bare verb stay behind	4
bare verb stuff behind	-5
bare verb take behind						13
bare verb throw behind	9
bare verb trim behind	5
bare verb walk behind	4
bare verb wire before	10
bare verb wouldn't behind	-14	19
beside add Q	-15			17
beside add b nobody				-6
beside add pp nobody	-36	-11		41
beside are Q	9
beside are all			8
beside are in	-5			18
beside are on	-15			32
beside arrive	-12		14
beside arrive pp other	-19	5	18
beside ask b other		5
beside bag b other	-14			17
beside balance	-32		15	4
beside be b person		15
beside be back	-16	25		-4
beside bead	-4	7
beside bead b other	-4	7
beside bed				6
beside bend	10
beside bend b nobody	4
beside blow Q				6
beside blow p person				4
beside bolt	-17			29
beside bolt pp other	-17			26
beside box		8
beside box b nobody	-5	12
beside box in	-8		19
beside box of	-31	36
beside box s other	-10	16
beside bring		18
beside bring Q	-14	33
beside bring a		8
beside bring b nobody		22
beside bring b other		8
beside bring b person		13
beside bring back	-14					6
beside bring me	-30	41
beside bring pp person	-38	-12				43
beside build				11
beside burn				31
beside burn Q	-26			34
beside burn b other	5
beside burn pp person	-25			43
beside burn through	-13			25
beside button	-5			16
beside button pp other	-5			16
beside button up	-5			16
beside buy Q	-4	23
beside buy a	-15			-6	14	11
beside buy b nobody		36
beside buy b other		15
beside buy b person	-7				27
beside buy i person	-10	23
beside buy pp nobody	-15	-36		-10	71
beside buy pp other	-21	-14		-17	-6	36
beside buy pp person	-28	-20			53
beside call b other	12
beside call for	15
beside call him	20
beside call i person	11
beside call pp other	-5			15
beside call s other	13
beside cap	-35			40
beside change				6
beside change Q	-13	5		6
beside change b nobody		5
beside change b person	-17			31
beside change pp nobody	-22			29
beside change the	-4			26
beside chip pp other	9
beside clean it	-6			20
beside clean pp other	-29	-4		36
beside clean pp person	9
beside clip	-10
beside clip s other	6		-8	5
beside close	6
beside close b person	12
beside come Q	-7		15
beside come T		-10			37
beside come bp nobody					7
beside come for	-10		19
beside come i person	7
beside come p nobody		-13			17
beside come p other			5
beside come s other					34
beside come the					7
beside come to	-30	-7		31
beside come up	24
beside cope	14
beside count			9	-6
beside count Q	-14	9	15	-12
beside count b person		12
beside cover Q			6
beside cover s other			5
beside crush	7
beside crush pp other	7
beside cut a				11
beside cut in				9
beside dig	7
beside dig Q	9
beside dig pp other	8
beside ding	11
beside ding pp person	8
beside ding the	8
beside do Q		-7		19
beside do a	-7	13
beside do all	6
beside do b nobody		5
beside do i other	7
beside do it	-14	14
beside do p nobody				8
beside doubl	14
beside doubl pp other	14
beside drill Q	12
beside drip on	9
beside drive				13
beside drive Q	-6			24
beside drive p person	-6			24
beside drop Q			5
beside dump i other				7
beside eat				31
beside eat Q	-45	-20		55
beside eat i other	6
beside eat my	5
beside eat p other	-13	-14		41
beside eat p person	11
beside figure		25
beside figure Q		32
beside figure b nobody	-22	36
beside figure i person	-9	20
beside fill				14
beside fill b person				8
beside fill pp other	-4			20
beside fill the	13
beside fill with	-20			35
beside find a	8
beside find b person	4
beside finish b nobody	-5			18
beside finish pp person	7
beside finish to	5
beside fish	6
beside fit Q				6
beside flash	10
beside float		-9		21
beside flush	22
beside foam	-12			22
beside frame	4
beside frame pp other	4
beside get Q			18
beside get about			16
beside get an	-27	19		11
beside get b nobody		40
beside get b other		29
beside get i other	-7	15
beside get it	25	-9
beside get maybe	-14		23
beside get me		23
beside get no	-11	14
beside get p nobody	-8	-19	44
beside get p person			30
beside get s person		9
beside get that	13
beside give b person	-21	-6		11		19
beside give me					6
beside give p person					7
beside glue				8
beside glue pp person				16
beside go Q				20
beside go and			16
beside go b nobody		8
beside go down	12
beside go i other	6
beside go off	18			-5
beside go over	9
beside go p nobody				27
beside go p other				10
beside go p person				16
beside go through	-15			56
beside go up				6
beside gotta pull	5
beside grab		8
beside grab Q	-10	5			19
beside grab a		11
beside grab b person	-4	20
beside guess		7
beside hang G	7
beside hang Q	-15			32
beside hang b nobody	-9		14
beside hang by	20
beside hang on	-10			4
beside hang pp nobody	-18			24
beside hang pp person	-6			25
beside hang s other	6
beside has Q	10
beside has its	12
beside have Q			32
beside have b nobody			43
beside have b person			47
beside have i person			23
beside have in	13
beside have let go	20		-7
beside have only			8
beside have pp nobody	12
beside have still	-34		39
beside have to	12
beside hold Q	8
beside hook up				4
beside i've	7
beside i've has nobody	8
beside install	-8			15
beside insulate	10
beside is down				15
beside is loose	7
beside is up	-6			13
beside knock	5
beside knock pp person	9
beside know b other			6
beside lay b person	12
beside lay i other	17
beside lay in		5	5	-15
beside lay pp person				19
beside lay the	8
beside leave G	9
beside leave Q	-6	-7	47
beside leave b other	18
beside leave me	-21		27	-19
beside leave of			8
beside leave on	6
beside leave over	20
beside leave pp nobody			6
beside leave s other			18	-5
beside level b nobody	7
beside lose pp other	9
beside make Q	25
beside make b nobody	-5	5
beside make it	-16	22
beside make pp person	25
beside mark	5
beside measure bp nobody					7
beside measure p nobody		-13			17
beside measure p other			5
beside measure s nobody	5
beside miss Q	-4	30
beside miss a	16
beside miss b person		12
beside miss from	-23	30
beside miss i person		20
beside mix				13
beside mix Q	-9	-6		25
beside mount				15
beside mount pp other	9
beside move Q	16
beside move b other	6
beside move i person	-10		25
beside move p nobody				27
beside move p other				10
beside move p person				16
beside nail				14
beside need		18
beside need G		4
beside need Q		20
beside need a		17
beside need another		12
beside need b nobody		30
beside need b other		7
beside need b person		20
beside need i person	-7	32
beside need more		15
beside need pp other		-4	9
beside need pp person	16
beside need qt	-41	45
beside need s nobody		12
beside need the			6
beside need to	11
beside nick	14
beside nick pp other	15
beside nick pp person	6
beside nick the	4
beside open Q	-12	-13		25
beside open pp other	5
beside open pp person				7
beside order	-6	16
beside order G					13
beside order N		8
beside order Q		17
beside order b nobody		28
beside order b other		11
beside order b person	-10				20
beside order i person	-18	28
beside order pp nobody	-5	-14			33
beside order pp person					15
beside order the	-8	12
beside other b nobody		24
beside other i nobody	-26	39
beside other p nobody		-4	17
beside other pp nobody	-23	-11		-6	44
beside other pp person						6
beside other s nobody	18
beside owe	-11	20
beside owe b person					6
beside own	11
beside pack	-10			16
beside pack b nobody	-7	14
beside pack it	-5	14
beside pack pp other	-10			20
beside patch b nobody	-6	13
beside patch pp nobody	15
beside pay	19
beside peel	8
beside pick					17
beside pick b nobody		37
beside pick b person	-5	13
beside pick i person	17
beside pick me	-17	27
beside pick pp nobody	-29	-19		-5	55
beside pick pp person	-7	-4			33
beside pick up	-24				38
beside pin	-19			16
beside place				6
beside place b nobody	-12			19
beside plumb	10
beside point Q	8
beside point b other	6
beside pour Q				19
beside pour pp other	4
beside prime pp nobody	-8			14
beside prime the				11
beside pull Q				13
beside pull out	7
beside pull pp nobody	17
beside put				8
beside put G	-22
beside put Q	-5			24
beside put a	-6			13
beside put bpp nobody				23
beside put bpp person				10
beside put i person		8		-5
beside put in	-13			29
beside put it	-31			33
beside put new	-18			31
beside put on	-28			34
beside rate	6
beside rate Q	6
beside read	5
beside read Q	5
beside read bpp other	13
beside read i other	5
beside rebuild	-26			33
beside redo				13
beside rehang	-8			21
beside relay				8
beside relay Q	-12			17
beside relay pp other	20
beside repair	-23			30
beside replace	-6			18
beside replace Q	-10	10
beside replace pp nobody	-20			33
beside replace pp other	-6	10
beside require	-24	18	15	-17
beside reset				9
beside reset bpp nobody		-9		19
beside reset it		-16		24
beside return	-9					20
beside return Q		-9	-9	-9		19
beside return b nobody		22	-6
beside return b other	28
beside return pp nobody	-57	-13	-7			54
beside rip b other	19
beside rip b person	-7		6
beside rod	15
beside rod pp nobody	12
beside run Q				33
beside run bp nobody		8
beside run bp person	-16	13
beside run i other	13
beside run out	8
beside run p nobody				16
beside run p other	22
beside run p person				4
beside run water	7
beside say pp person	16
beside say s person		10
beside scratch b other			6
beside scratch the			6
beside screw				18
beside screw Q				15
beside screw pp nobody	-17			23
beside screw to	5
beside scribe a	12
beside scribe b other	-4	11
beside scribe b person	11
beside seal pp other	-5			14
beside see pp person	5
beside see s other	17
beside send	-15					15
beside send Q	-40	12				20
beside send a		4
beside send b other	8
beside send i other	-11	20
beside send pp other	-4
beside send pp person						8
beside send the	6
beside set Q				17
beside set a				10
beside set in	10
beside set it				14
beside shim	11
beside shim pp person	18
beside shim the	17
beside ship	5
beside shut	5
beside sign	-8		17
beside sign pp person	8
beside sister Q	20			-19
beside sister a	-23			30
beside sister pp nobody				4
beside sister pp person				6
beside sit flat	-25	31
beside sit on	5
beside size b nobody	12
beside skim pp nobody	5
beside snake	12
beside snug	16
beside spend	-26	-9	-8	35
beside spray both	11
beside spray pp other	9
beside stack	-12			23
beside stand Q		10
beside stand s other	5
beside start at	7
beside stay			18
beside stay b nobody		-16	17
beside stay b other	-10		17
beside stick a	-13			12
beside stick b nobody	26
beside stick pp person				9
beside stop		16
beside stop b other	-25	30
beside strip b other	-5		8
beside strip of		11
beside stuff	-18	17
beside stuff b nobody	-6
beside supply		8
beside supply b other	-11	16
beside swap				16
beside swap b nobody		8
beside swap b other	7
beside swap for	-19	19
beside swap pp nobody	-31			37
beside swap pp other	-24			31
beside swap pp person	-7			25
beside swap that	19
beside swing		20
beside swing b person	-10	26		-5
beside swing by	-18	29		-6
beside take Q	-9			32
beside take a	27
beside take b nobody		-10
beside take b other		9
beside take back	-21		37
beside take me		-12		9
beside take out	30			-16
beside take p nobody	-29					38
beside take p other				26
beside take p person	-16					31
beside take s other	5
beside take that	-16					19
beside take the						31
beside throw a	-28	19
beside throw b nobody		15
beside throw p person	-10			27
beside tie pp person	-4			14
beside tighten	18
beside tighten the	13
beside tile	9
beside top G	23			-12
beside trip	15
beside try b nobody	-13		14
beside try pp person	15
beside turn b nobody	11
beside turn b other	-5			16
beside turn out	9
beside turn s other	11
beside undefined has nobody			29
beside use				23
beside use G	14
beside use Q				24
beside use a	-28			37
beside use about				14
beside use b nobody	-30			44
beside use b other	6
beside use b person	-7			7
beside use pp nobody				28
beside use pp other				30
beside use pp person				28
beside use the	15
beside use up	-32			40
beside wait i other	-19	24
beside wait on		16
beside walk					7
beside want G	9
beside want Q		12
beside want another	15	-6
beside want b other	16
beside want b person		27
beside want it	18
beside want pp person	16
beside want s nobody		4
beside want the	18
beside want water	15
beside wash the	5
beside were	19
beside were is other	22
beside wire	5
beside work	11
beside work bp nobody		8
beside work bp person	-16	13
beside work bpp nobody				11
beside work p nobody				13
beside work p person				6
beside work pp nobody				7
beside work s nobody	-7		6
beside wrap pp other			13
beside wrap with			14
bound over	21
code	-40	6		22
count after bought here					11
count after bought sentence	-49	-5	9		34
count after have far		26
count after have here	-4		22	-5
count after have sentence	-8	14
count after need here		47
count after need sentence	-16	46
count after returned far	-34	10	12
count after returned sentence	-45			-18	31	17
count after used far	-10	7
count after used here				22
count after used sentence	-26
count beside are	-36			53
count beside blow	13
count beside box		-5	18
count beside break	-15	18
count beside bring	-15	19
count beside buy	-9	15
count beside buy b nobody		11
count beside buy b person		6
count beside buy pp nobody	-4	-10			35
count beside buy pp person	-34	-25		-14	44
count beside call	27
count beside change	-21			34
count beside come	-18		8		8
count beside cut	-7
count beside do	5
count beside drill	16
count beside drip	24
count beside drive	-27			34
count beside eat	-18	-12		29
count beside get	-7
count beside give	-28			-5	14	15
count beside glue	-8			19
count beside go				12
count beside grab					6
count beside hang	-31			40
count beside have			23
count beside have b nobody	-38		51
count beside have b other	16
count beside have b person	-18		48
count beside have pp other	38		-20
count beside have pp person				14
count beside leave	-25	-7	50	-26
count beside like		15
count beside make	-6	14
count beside measure	20
count beside measure bp other	26
count beside measure i other	9
count beside measure i person	5
count beside measure p other	-38		28
count beside measure s other					5
count beside miss	-4	31
count beside mount	-22			24
count beside move		-9	16	-13
count beside move b other	11
count beside move p other	-9			24
count beside move pp other	-32	9	32	-25
count beside move s other	-33	8	18
count beside need	-4	31
count beside need b nobody		23
count beside need b other	-5	20
count beside need b person	-11	43
count beside need s other	15	-5
count beside nothing	-11
count beside open	-5	-4	19	-12
count beside order	-13	18
count beside other b nobody	-9	49
count beside other b person	-5	13
count beside other i other				-5
count beside other i person	-6	22
count beside other p nobody	-30	-20	36	-15		17
count beside other pp nobody	-48	-7		-19	35	25
count beside other pp other	11
count beside other pp person	-16	-17				30
count beside paint	18
count beside patch	-5	15		-4
count beside pick	-13	10			15
count beside point	10
count beside pull	24			-7
count beside put	-29			57
count beside rate	6
count beside read	12
count beside replace	-25	5		19
count beside return	10					4
count beside roll	13
count beside run	-12			24
count beside say b nobody		9
count beside say b other	21	-26	10
count beside say pp person	23
count beside seal	-9	12
count beside see	20
count beside send	-55			-15		44
count beside set				17
count beside sister	11			-26
count beside stick	-11	4
count beside swap	-19	5		14
count beside take	-11	-10				22
count beside throw	-17	9		6
count beside top	10
count beside turn	21
count beside undefined has other			-11
count beside undefined is other				9
count beside undefined is person	14
count beside use				23
count beside use b person	-11	10
count beside use pp nobody				18
count beside use pp person	-14			33
count beside were	21			-4
count beside work b nobody	-12	21
count beside work b other		14
count beside work b person	-17			7
count beside work bpp nobody	-22			41
count beside work bpp person	-22			34
count beside work i other	5
count beside work p nobody	-9			21
count beside work p other				6
count beside work pp nobody	-13			47
count beside work pp person				18
count beside work s other	14			-4
count buy imperative behind		10
count buy modal behind		14
count buy past before	-33	-20	-10	15	19
count buy past behind	-13	-19			56
count buy present behind	-30	26			5
count cue back	-10					39
count cue bought	-31			-5	43
count cue have	-22		71
count cue need	-5	43
count cue used	-10			33
count have present before	19
count have present behind	-6		29
count kept	-19		49
count left #	-35			9
count left (	-24			16
count left +	-23	9		10
count left N	30
count left about			13
count left add		11
count left all				36
count left and	-38	18
count left are	24
count left at	36
count left back	-25	-11				32
count left be	14
count left between	23
count left bring	-5	23
count left buy	-30	23			12
count left by		8		-6
count left change	-7			22
count left cut		6
count left do	15
count left down	-21			31
count left drive	-12			29
count left exam	20
count left from	6
count left get	-28		17
count left go				9
count left grab	-15	7			18
count left hang	-26			36
count left have			19
count left i'm		11
count left in				31
count left leave	-16		29	-16
count left like	-10	24
count left maybe	-18	-12	44
count left me	-31	25
count left miss		25
count left need		27
count left now				6
count left of	27
count left on				35
count left only			25
count left order	-21	29
count left out	-7			23
count left over	20
count left paint	7
count left past	12
count left point	10
count left pull	10	-19		-17		18
count left put	-10			26
count left rate	6
count left read	11
count left replace	-10	10
count left return	6		-5			6
count left sand	-16	11
count left say	11
count left set	-7			19
count left short	-43	43
count left take	-29	-5	-13	33		12
count left that's	-37	13		12
count left then	22
count left there's	-33		59
count left those		-4
count left through				10
count left throw	-17	9		6
count left under	9
count left up	-31				15
count left use	-13			27
count left we're		7
count left with	-49			42
count list have	-44	-29	51	-31
count list need	-30	49		-30
count measure owed behind	-6		8
count measure past behind					11
count measure present before		12		-10
count more	-16	20
count move imperative behind	20
count move past before	-5		49
count move past behind	-14		10
count move present behind		15		-12
count name flawed	-20
count named before area			5
count named before surface	8
count named before work	-8		5
count named here area	-25	27
count named here defect	5	-8
count named here finish	-14	17				9
count named here material	-63			24
count named here part	-89	5		10
count named here surface	27
count named here tool	-49	22		18
count named here word	-38
count nameless	21
count need modal behind	-27	33
count need owed before		10		-6
count need owed behind		18
count need past before	-26	7	7
count need past behind	15
count need present behind	-16	27
count not ahead		11
count null copula before		10
count null modal behind		12
count null none no	-16
count null owed behind	4
count other copula before	-6
count other imperative behind	-22	64
count other modal behind		7
count other owed behind	-18		20
count other past behind	-10
count other present before	24
count other present behind	-10	14
count pointing	-33			21
count right (	-20			-6	12
count right +	-7			9
count right /	-50	26	-7	26
count right @	-27	20		8
count right a		9
count right above	16
count right across	8
count right after	22
count right all	-40	11	19	7
count right already		-5	10	-13
count right and	-10
count right are	-24			21
count right be	14
count right box	-16					18
count right by				-4
count right can	-56	19	17
count right come		-9		-27		27
count right crack	20
count right don't				6
count right down	-4			21
count right each	-4			15
count right for	-33	31
count right go				14
count right hang	-39	-7		44
count right has	38			-9
count right i	-14	-15			15
count right in	-21	-9	17	19
count right it	-7		16
count right leave	-15		59
count right miss	13		-6	-26
count right more		10
count right need		16		-9
count right no	-35	44
count right now				21
count right of	-30	14
count right off	30
count right out	-33	-15	-6	54
count right over			13	-18
count right pull	14		-6
count right run		10		-16
count right short		31
count right spare	-31	-10	39	-20
count right still			23	-14
count right strip			12
count right the	-13	15
count right then	14
count right through				15
count right to						10
count right up	-23			46
count right use	-9			21
count right were						13
count right where	-6		24
count right which				-7
count right with	10
count say imperative behind	-13			6
count say modal behind	16
count says copula before	-4
count says imperative behind		30
count says imperative behind not		21
count says modal before	-7	5	-4	7
count says modal before not	-17	9
count says modal behind		29
count says modal behind not	12
count says none no	-17
count says none no not		16
count says owed before	-34	29		-17	14
count says owed behind		11
count says owed behind not	22	-7
count says past before				9
count says past before not	-17			12
count says past behind				5
count says past behind not	14		-22
count says present behind	-11
count says present behind not	-7	14
count sized	-58	29
count sold so true	-16
count then buy b	-23	29		-19
count then buy pp	-33	-20	-10	15	19
count then measure b	-19	-10	-20	32
count then measure i	-17	-14	12	9
count then measure p	-24	-8				32
count then measure s	25
count then move b	4
count then move p	-8	-13		28
count then move pp	-14		61
count then need b	11			-5
count then need pp	-23	6	20	-12
count then other b		28
count then other i	16			-24
count then other pp	12
count then other s		7
count then undefined has	29			-4
count then undefined will	-23	11
count then use pp	-16			26
count then work bpp		-5
count then work pp				23
count then work s	-38	22		12
count use past before	-16			26
count use past behind	-7			20
count use present behind	-37			39
count verb add behind	-5	6
count verb balance behind	-31		17
count verb be before	-5
count verb break behind	-15	16
count verb bring behind	-19	18
count verb buy behind	-7	15
count verb change behind	-53			50
count verb come behind		-6			28
count verb count behind	38	-21
count verb crack before	15
count verb cut behind			10
count verb do behind	24
count verb drive behind	-15			29
count verb find behind	-11	4
count verb finish behind	18
count verb get before	-31	18	-5	21
count verb get behind	-14
count verb give behind	-23				13	13
count verb glue behind	-15			29
count verb grab behind					5
count verb hang before	-53	-11		57
count verb hang behind	-33			45
count verb have before	14
count verb have behind			25
count verb i'll behind	-15	29		-16
count verb lay behind	-45	-12	28	19
count verb leave before	-19		50
count verb leave behind			25
count verb make behind	-23	4	10
count verb measure behind	18
count verb miss behind	-38	43
count verb move behind			7	-10
count verb need before		22		-9
count verb need behind	-5	39
count verb null before		10
count verb null no	-16
count verb order behind	-8	15
count verb paint behind	24
count verb patch behind	-5	15		-4
count verb pick behind	-16	18			11
count verb prime behind	33			-12
count verb pull behind	35			-9
count verb put behind	-8			37
count verb rehang behind	-14			23
count verb replace behind	-9			23
count verb run behind	-24			21
count verb sand behind	4
count verb screw behind	-12			19
count verb send behind	-23		-16	-16		42
count verb set behind				8
count verb should behind	-12			19
count verb strap behind	-26		12	11
count verb strip before	13
count verb take behind	-24	-16				31
count verb think behind	-17		14
count verb throw behind	-17	9		6
count verb tighten behind				6
count verb use before	-31			38
count verb use behind	-9			16
count verb want before	-18		12
count whole clause	-42			21
count work modal before	-25	23	8	-11
count work owed behind	9
count work past before				41
count work past behind				47
count work present before	-33			28
count work present behind	-16			19
cue bought					45
first N	-15	33
first an	-28	37
first another		15
first birch			5
first block	9
first bracket		6
first brass	15
first brown	9
first coffee	6
first cust	18
first dumpster	5
first eggshell	-27					19
first epoxy				5
first fix	4
first flash	-7		16
first gray	-8	7
first hot	12
first lh	8
first mortar	9
first nah	5
first new	-50			38
first niche	4
first orange	5
first pipe		9
first plate	-25			20
first rh	6
first rigid				6
first ring	4
first ro	6
first rod	16
first screen		4
first seat	-24			27
first second	11
first shim		7
first silicone				4
first small	-31	34
first soft close	8
first some	-6	15
first stainless	22
first staple	-8	8
first upper	6
first vent		12
first walnut	9
first waste				5
first wax	-29		18
first weatherstrip	6
first white	5
first wire	8
first wrong	4
group eachOf		-21		21
group range	23
head 1	-18		7
head 2x4	-11		5	6
head 5	5
head 7	-11	17
head acrylic	-19	16
head adhesive	-20		9
head aff	8
head air	10
head air gap	-10		18
head almond		15		-6
head already	5			-6
head amps	23		-6
head anchor	-28			34
head anchors	-16
head anyhow	10
head anything	11
head apart		-14		7
head away	11
head back	-10					44
head baffles	17
head bags	-24	15	15	-7
head ball	5
head ball catches	-19	13	13	-8
head ball valve	-24	25
head balusters				17
head bar		5
head baseboard	10
head basket	-18	13
head bathroom		-6		16
head batt	11	-15
head batteries	-6			6
head battery	-7	16
head batts	-6	8
head bays	40	-8
head bead			4
head belt	-23	13		15
head belt's		6
head belts	19			-6
head bench	9
head bifold		7
head bit	16
head blocks	-13
head blue	13
head blue tape		14		-9
head board	-15			16
head boards				11
head bolt				20
head bolts	-6
head bond		9
head bonding primer	-19	24
head bondo	-44			40
head boots	21		-10	-20
head boss	9
head bowls				11
head boy	6
head bracket's			6
head brackets	-19
head brads	-20	10			12
head braided lines	-6		6
head brass		6
head breakers	-23				13	15
head brick	-25		12	11
head bricks				5
head brown	5
head brush seal	-7				7
head brush strip	-16	27
head brushes	-31	18	18	-14
head bucket	-12		7
head buffet		6
head bulbs	-43	-5		12	18
head bullnose		23
head bumpers	-14
head bushing	-13	17
head butt joint	6
head butt joints	5
head bypass		-5		16
head cabinet doors				9
head cabinet pulls	-17			15
head cabinet screws	-8
head cabinets		-8	13
head cable				4
head cables		-21		20
head can lights				8
head carcass	14
head carcasses	8
head card	20	-5
head carpet	20
head carpet's	16
head cartridge	-6		7
head case	17
head cat6	-4			14
head ceiling fan						19
head ceiling tile			9	-5
head ceiling white	-10	19
head cellulose				6
head center	25	-5
head centres	21
head chair rail	5
head chairs				-6
head channel		9
head check valve		-12		13
head chimney's	14
head chunk	14
head circuit	16
head clamps	-14	13
head closer	-10	10
head closer's	-19		29
head closet			22
head closet bolts		13
head closet doors	27		-4
head co	5
head coat hooks				7
head cock	15
head code	9
head coffee		22
head coil	28
head cold	4
head company	11
head condenser	-9			16
head conduit strap	8
head construction adhesive	-9				11
head contact cement	-23	35
head contractor bags			7
head cord				5
head cord's	5	-17	8
head corners	19	-12		-13
head countertop	14
head couplings				10
head cove base	28
head cover plate	-6	17
head cricket	15
head crown's	4
head cut				10
head damper's	17
head deck mud	-7			20
head deck screws	-13			8
head deep	25
head dirt	20		-12
head discs	-45	10	7	13
head dog	4
head dogs			14
head door closer	-10	19		-5
head door stops				14
head door sweep	-32	27	13	-14
head double		11
head downspout				6
head draft	-11			12
head drags	6
head drain's	7
head drawer boxes	-8		6			7
head drawer front	26
head drawer fronts	34
head drawers	11
head drip edge	11
head drop	15
head drop cloths	-7		20
head drops	6
head dryer vent	10
head drywall anchors			5
head drywall's	-22			30
head dumpster	5
head duplex	5
head earliest	9
head edges	6
head eggshell	-30	14
head elastomeric	11			-9
head elbow	-25	37
head elbows	-38			26
head electrical	31	-5		-5
head em	10
head enamel	-13	-26	40
head end caps	-16
head enough			10
head entry	26
head epoxy	-10			8
head escutcheon		18
head except	13
head expansion tank		15
head extender	-5			11
head extenders	-33	41
head face frame	8
head face frames	12
head fan	6
head fascia	10
head fault	19	-5
head fell		12
head fella	6
head field tile's	-23	-7	12	9
head filler	5
head filler strip	-40	32
head filter	-15	4
head filters	-14			15
head fine	6
head finger	30			-8
head finish nails		42	-16	-10
head fire caulk		27	-10	-24
head fixing	-5			5
head flame sensor	14
head flapper			-4	23
head flashing tape		-10		17
head flashlight	12
head float switch	-4
head floor tile		-22	20
head flow	8
head flue	14
head foam	-13			6
head foam rollers	-21	37		-10
head foil	-21	-7	19
head folks	21
head footings	15
head force	13
head four by four	-7	15		-6
head frost free	-17	5		8
head full	-17
head furnace filter	-30		9	5
head gap's	8
head gary	8
head gas	8
head gauge		5
head gfi	8
head glass doors	-17			15
head globe		6
head good	17
head grain	6
head gravel's				12
head gray				11
head grease	-8					8
head grid				12
head grout's			18	-13
head guillotine	27	-8
head gutter		-11		7
head gutters				8
head guy	6
head guy's		11
head hair	22
head hall	-13	-7		15		10
head hammer	9
head handrail	17
head handrail brackets	5
head hang	8
head hanger				7
head hangers				-6
head hard	17
head hardware			14
head hardwood	-20	-8		25
head header	11
head heat mat	15
head heat mat's	10
head heater			4
head height	6
head height's		10
head herself	5
head hidden clips	-8				8
head hidden hangers	-13			21
head high	27
head hinge screws		15
head hip	6
head hiya	8
head hob		9
head holder	-25			29
head hole	7
head holes	10
head hoses	-5			6
head inside corners		13		-19
head insp	15
head instead					5
head jack	21
head jacket	9
head jacks	-12		18
head jan		7
head joist	25		-5
head joist tape	-24	12		7
head keys	18
head kick	-8			16
head kilz	-47		35	13
head kit	-52	49
head kit's	-22		20
head kits	-44	15	28
head knobs	-15		4	9
head lacquer	-9		11
head lady	4
head lags	-16			15
head laminate				7
head latches						10
head laundry box	14
head lead	4
head ledger	16
head left hand	-18	22
head lid	-6	12
head light switch	6	-13	10	-6
head lights	26
head line set	7
head lines	16
head lint	20
head lip	7
head live				14
head lockbox	-6				18
head locks			8
head loop	10
head loose	15
head lord	8
head low	7
head lowers	-6			13
head lugs	5
head lvl		15		-8
head machine	12
head maglock	15
head main	5
head man	7
head manifold	26	-7
head marble	13
head mastic	-7			4
head max	11
head maybe			9
head meanwhile	24
head medallion	5		-11
head membrane				9
head mind			14
head mini split	5
head mirrors		-6		8
head mixer	-12		9	6
head mortar	-21
head mortar's	-12		29	-8
head mosaic	16
head mosaic's	-11			15
head mud	-12	21
head multi-finish	-23	14	11
head must	10
head myself	17
head nail plates	-34	11
head neutral	20
head nipple	-7	21
head nm	-9			7
head nos	-40			34
head nosing						8
head numbers			15
head ofc	5
head only	4
head open	7
head opener's	5
head orange	5
head outlet	18
head outlet covers		-19				18
head outside	-12	27
head outta		-15		13
head own	22			-8
head p trap	-7
head packing	-18			21
head pad				4
head pads	-5	14
head paint's	15
head pan		13
head pancake	20	-23
head panel's	19
head part	13
head particle board	-8		16
head patch	10
head patio door				4
head pavers				4
head pendant	10
head penny round	-7		25	-17
head pex	-10			21
head photos	13
head piano hinge	-19	6		12
head pickets	-22			4		14
head picture	16
head piece	-16			7
head pieces	15	-14
head pins		26
head pipe's	25
head plank	5
head planks	-30		35
head plasterboard					9
head plate	-6			6
head plates	-37	8
head please	-33	56		-14
head plenty		5
head plinths	-9			16
head ply			9
head plywood's		8
head posts				14
head precharge	14
head press	10
head pressure	17
head primer	-9
head print	10
head profile	4
head prv	-13	9
head putty				20
head pvc	-27			24
head radiators	32	-4		-15
head rafter				11
head range hood	-9		20
head read	9
head rear	5
head receipt	22	-9
head receptacle	16
head receptacles				8
head reducer	-28	27
head relief valve's	18
head render			9	-7
head rental	17
head return	6
head rh	6
head right	6	-10	11	-27
head rim	-16			24
head ring	-21			16
head rise	4
head risers	43	-23		-7
head rock	5
head rods	-37	7	8
head roller	-15	25
head roots	7
head rough in	10
head round	14
head row	4
head run	26
head runner	-5	12
head salon	17
head sample	22	-7
head sand paper		16		-9
head sandpaper	15			-5
head sandwich	8
head sash	-28	27		4
head sash cord	-9	13
head satin		-11	28
head screen						5
head screwdriver	5
head screws				16
head scribe molding		-7	19	-9
head seal				5
head sealant	-35	23
head seam's	14
head seams	12
head seat washer	-23			20	7
head self leveler	-21			30
head semi gloss	-32	10		9
head sheet rock					13
head shelf brackets	-32	24		12
head shelf pins	-5			20
head shellac primer	-7	-7	20
head shelves				24
head shims	-42	6		11
head shingles	8			-9
head shoe		18
head shower pan	4
head shower walls	22			-11
head shut off	16
head shutters				6
head sides	27
head sign	21			-4
head sinks	-21			17
head skim	20	-6
head skirting's	-12	19
head slab's						8
head slabs		-16	17	-6
head slats		13		-15
head slatwall		-9		6
head slider's			10
head slip	-4
head slow	12
head smoke				7
head smoke alarm		9
head smoke detector				8
head sockets	-13	-14	6	14
head sod	-8			13
head soffit	8
head soffit vents	25
head soft close	8
head solid	13
head somewhere	9
head spacer	-12			19
head spacers				6
head spare	-35	-15	40	-13
head speakers	-18		15
head spins	6
head splice	6
head split	8
head spots	20			-7
head spout		9
head spring	9
head springs	-6			18
head square	20
head stack	26	-4
head stain	6
head stainless	14
head standards				7
head staple		7
head static	9
head still	34		-9
head stock			15
head stones		19	-8
head stop	17
head storm door	-28		18			20
head strainers	-26			15
head strap	-20			28
head straps	-5	15
head string	16
head strings	13
head structural screws	-45	33		6
head stub's	11
head subfloor	28
head subfloor's		-9	9
head supply line	-13				19
head supply lines	-11			14
head supposed	10
head switches		-8		6
head tack strip	11
head tag	24
head tailpiece	-25	18	16
head tap	14
head tapcons	-48	37		12
head tarp	-19	15
head tee	-6
head template	10
head tester	-5	18
head the lady	-18	26
head thermostat	5
head thinset	-10			12
head through bolt				4
head toggle bolts					15
head toggles	-38	25		10
head toilet seat				8
head toilet's	12
head top pivot	-18	22
head towel	8			-13
head towel bar	-31	-8		-9	27	16
head traffic	7
head trailer	4
head trash pullout	9
head travelers	8
head trim screws	-24	-10	15	7
head trim's	5
head trims	20
head trunk	27		-5
head tub's	22
head tubes	-19	-7		18
head twice	16
head two by eight				6
head type s			10
head underlayment		-23	8
head union	-16	30
head upper				6
head upstairs	-9			23
head ute	5
head vac	-9		18
head valves		9
head varnish				10
head veneer				-15
head vent stack	16
head vinyl plank	-28		13	9
head wait	11
head wall paper	8	-12	-7	9
head wall tile	10	-19	11
head wall's	10
head wallpaper			21
head walls	24
head walnut		13
head washer	-11			10
head washers	-47	48
head water heater's	13
head wax	-22		9
head wax ring	-53		8	31
head wax rings	-16		12
head wedge	8
head weight	-14	-10		15
head wet saw		-17			21
head whip				5
head whoever	19
head wide	20
head winter	8
head wire nuts	-11			11
head wire shelving's	-10			19
head wire's	-7
head wires	42			-21
head wood filler	-29	26		4
head wood glue	-20	25	-17
head wrong		12
head x	-16
head yet	9
joined and none	-5
joined run-on none	15
kept			6
last cue bought other		17
last cue bought same	-10				18
last cue need same		12
last use buy imperative same		34
last use buy modal same		7
last use buy owed same		-13	12
last use buy present other		15		-9
last use buy present same	5	-12		-7	14
last use have imperative same		13
last use measure past other	-10			20
last use move imperative other		6
last use move modal other					5
last use move modal same	11
last use need modal other	5
last use need modal same	-11	8
last use need owed same		10
last use need past same		5
last use need present other		11
last use null present same		13
last use other owed same		10
last use say owed same	7
last use see imperative other					8
last use see modal same	4
last use see owed same	11
last use use imperative other	-21					22
last use use past same	-15			15
last use use present same			9
last verb add same	-9			8
last verb adjust same	9
last verb arrive same	-8	-12	34	-12
last verb ask same	18
last verb balance same		7
last verb blow same				6
last verb bolt same	-14	-9		12	13
last verb borrow same	-10	19		-8
last verb box same	-5			13
last verb break same	-27	10	12
last verb bring same		16
last verb build other	7
last verb buy same		7
last verb can't same	20
last verb caulk other	15
last verb change other		17
last verb change same				11
last verb clear other	12
last verb clear same	20
last verb clip same				11
last verb close same	-5		7
last verb consum same	-18	-24		28
last verb core same	-16			23
last verb cover same	-8	20
last verb crack other	23	-9		-5
last verb crack same	-13	12
last verb deliver same		-15		11
last verb dial same	13
last verb didn't same	11	-16
last verb die same	16
last verb dig same				17
last verb doesn't same	5	9		-24
last verb drain same				8
last verb drop same	15
last verb dump same		6
last verb feather same		15
last verb feed same				9
last verb figure same			5
last verb file same	-24			19
last verb fill other			11
last verb find other	-17		11		9
last verb finish other				5
last verb fire same	-13	18
last verb fit same	-10			16
last verb fix same				8
last verb flash other	6
last verb flip other	-9	17
last verb float same	-8	16
last verb flush same	7
last verb foam other	-10	10
last verb foam same	7
last verb forget same	15
last verb frame same	-15	6
last verb fre same	17
last verb grind same	6
last verb grout same	-5			5
last verb guess same		9
last verb hand same	-6					9
last verb hang same				15
last verb he'll same	6
last verb hose same	15
last verb hum same						9
last verb install other		11
last verb kick same	15
last verb know same			6
last verb land same	-5		12
last verb leak same	16
last verb learn same	23			-8
last verb look other					10
last verb look same	6
last verb measure other	-22			16
last verb measure same	30
last verb meter same	16
last verb miss same	4
last verb mitre same	5
last verb mount other	23
last verb move other	-8	9
last verb move same	9
last verb need same		31
last verb notch same	11
last verb notice same	4
last verb owe same		10
last verb pack same		-16		13
last verb pass other	6
last verb pass same					17
last verb patch other			8
last verb peel same			5
last verb place same				11
last verb plane other			12	-7
last verb point same	-11			17
last verb pop same	10		4	-21
last verb pour same		16
last verb prime same			8
last verb promise other	-11	-5	26	-5
last verb pull other	-4			14
last verb rack other	26
last verb rake same	-6
last verb rate other	5	-5
last verb read other		4
last verb redo same	-17	4	19
last verb refasten other	13
last verb reglue same	17
last verb rehang other	19
last verb rehang same	8
last verb repair same				13
last verb replace other	-5	7
last verb replace same	-23			15
last verb require same	-6	36	-30	-39
last verb rip same	18
last verb roll other	8
last verb scribe other	4
last verb send other			4
last verb shim same				9
last verb short same	26	-13
last verb show same		15
last verb shut same	9
last verb silicone same			-13	13
last verb sister same		-10
last verb sit other	-15		11	8
last verb size same		11
last verb slit same			14
last verb smell same	11
last verb snake same	5
last verb snug same		9
last verb spend other		7
last verb spin same		4
last verb splice other			6	-13
last verb spray same	28
last verb square same	7
last verb squeak same		10
last verb start other	19
last verb stay same			10
last verb stick other		6
last verb stop other		6
last verb straighten same	-13			-8	20
last verb strip other	-14			17
last verb stuff same				15
last verb tap same	13
last verb tape same	16
last verb tear same	21
last verb text same				12
last verb throw same		5
last verb tie same	25			-12
last verb tile same		11
last verb top same	14
last verb touch other	-11	17
last verb trace same				5
last verb trim other	-16	25
last verb try same	5
last verb use same	-12			13
last verb vacuum same	26
last verb wait same		4
last verb wanna same	-7	-7			21
last verb work same	11
last verb wrote same				5
last verb zip same	-22			6	7
left # Q			11	-7
left # about	-13			10
left # add	-10			18
left # all	-33			46
left # at	5
left # box	5
left # bring	-8	20
left # buy	-16	14			10
left # change	-17	6		8
left # do				6
left # every	18
left # figure	-38	44
left # finish	-6			18
left # from	-4		23	-10
left # get	-41	46
left # grab		7
left # hall bath			6
left # hang	-20		5	7
left # have			39
left # i'm		8
left # i've	7			-6
left # in	11
left # just	17
left # living room	12
left # make	19	-5
left # maybe	-22		19	-8
left # need		28
left # of	5
left # only			13
left # order	-5	18
left # prime	-11			16
left # replace	-18			27
left # return	-6	-8	-8	-10		32
left # screw	-12			16
left # short	-36	53
left # swap				12
left # take	-10					21
left # that's	-16			11
left # the			19
left # there's			22
left # they're	11
left # throw	-21	35
left # use				32
left # want		9
left # we're		18
left # with	15
left &	-15			7
left +	-24
left @	7
left G &	-27	15		13
left G (	28	-7
left G +	-21	16
left G G	-11			11
left G Q		31		-14
left G about	14
left G and	-32	18
left G are	9
left G be	5
left G down	-10			17
left G for	8
left G have	14
left G is	8
left G leave	29		-20
left G need	-5	20
left G or	11
left G take				13
left G the	30
left G want		11
left N and	-21	25
left N in	16
left N with				15
left Q +		8
left Q G	-10
left Q Q	15
left Q and		22
left Q by	10
left Q for	9
left Q in	15
left Q need	-16	23
left Q of	16
left Q off	5
left Q on	5
left Q over	18
left Q short	29	-18
left Q then	5
left Q through	27			-16
left Q to	8
left Q under	10
left Q with				8
left T between	10
left T if	4
left T with		24
left a G	33	-20
left add	-9			6
left all				29
left all in	-7			17
left and half	-22	11	14	-11
left and then	12
left another	22	-12
left are in	-12			27
left around	7
left as	7
left ask	16
left b	11
left back						10
left back with		7
left between	7
left black	4
left blow				5
left book say	9
left bottom of	10
left box of	-30	34
left br	-7			15
left break	-5	7
left bring		14
left bring back	-14					6
left bring me	-17	27
left burn				20
left burn through	-13			25
left buy	-14	8
left by Q	9
left by T	-7		20	-11
left call for	16
left call it		6
left can't get	7
left clip	-32	6	11	11
left closet			10
left come			7
left come in			11
left come out	11
left come up	25
left count	-13	9	15	-13
left cover	7
left cut in				7
left cut out	4
left down				10
left down from	12
left down to			31	-5
left down with	16
left drill	9
left drip	4
left drip on	9
left drive	-12			29
left eat				26
left em	-5	16
left exam	20
left fifth	10
left figure		31
left fill	11
left fill with	-26			38
left first	-7	18
left fit				12
left flush	17
left foam	-8	-7		30
left forget	-6	14
left get maybe			8
left get me	-12	34
left give	7
left give me					10
left glue	6
left go and			16
left go back			7
left go on	11
left go through	-37			65
left gonna need	6
left gonna want	-12	23
left good			14
left grab	-19	19			8
left half	-18		23
left hand			12	-4
left hang by	22
left hang on	-15			9
left have in	13
left have only			8
left he need	-20	27
left he want	14
left he'll want	-9	21
left he's get	-4		12
left here	-30	-10	37	-6
left him		5
left i bring						16
left i buy	-6	-8			25
left i change	-12			25
left i count	-13	9	15	-13
left i do	5
left i drive	-27			34
left i figure	19		-7	-7
left i forget	-13	20
left i get	-19		43
left i hang	-11			24
left i have	-20		39
left i lay	-8			15
left i leave			16
left i need		12
left i open	20
left i order	-33	-28			46
left i put				28
left i run	-9			27
left i set	-12			26
left i stick	-11			18
left i swap	-30			37
left i take	-14			8		14
left i think			4
left i use	-13			28
left i want		13
left i'd like	-20	29
left i'd say		10		-7
left i'll bring	-4	12
left i'll need	-13		13
left i'll want	-22	26
left i'm		7
left i'm short	-29	35
left i've	7
left i've get	-25		50
left i've put	6
left in about	19
left in at	6
left in with		9
left inspector want	12
left instead of	18			-12
left into	4
left is in			4
left it T				13
left it and	-13			6
left it at	16
left it by	17	-9
left it for	-9	6
left it have	18
left it out	-10			16
left it run	15
left it take				20
left it to	23
left it up	11
left it with				11
left it's get	-15	6		10
left it's in	12
left land	7
left last of	-29			37
left laundry	8
left lay	-5			17
left lay in	-13	9	9	-15
left leave of			8
left leave on	7
left living room	9
left long	14
left loose	13
left lose	6
left make	8
left maybe	-19		42
left me	-8	23
left me is	17
left me up	-17	27
left miss		16
left miss from	-23	30
left mix				22
left mud and				12
left need		21
left need G	-11	18
left need a	-12	18
left need to	11
left new	-28	31
left no	15	-9
left of it	21
left of the	46			-15
left off with	13
left old	16
left on all				7
left on it	-11			14
left on with	-18			24
left one's	6
left only			13
left only get	-47	-7	48
left only have	-29			24
left order	-14	17
left out with	-21				28
left outta	17
left over by	6
left owe	-5	13
left pack				13
left past	7
left patch	10
left pick	6
left pick up	-35	5			43
left please		11
left plug	5
left point	9
left pour	-12			24
left prime	-8			14
left put in	-26			34
left quick	7
left rate	8
left read	7
left replace	-10			10
left rest	-45	-16	48	-22
left return				-6		27
left right	-7	14
left right down	4
left right through	11
left sand	-7	6
left screw	-6			18
left screw to	5
left send	-13	5
left send is			6
left set				12
left set in	11
left she want		9
left she's get	-5		10
left short	-24	41
left short by	-12	24
left short of	-12	18
left short on	8
left should be	5
left shy of				8
left side				5
left sign	-12		19
left sit on	6
left somebody run	14
left sound like	13
left spend	-26	-9	-8	35
left stack	-14			24
left stand		10
left stick	-9			11
left still	-8		24
left still get	-21		33	-8
left still have	-14		33
left still in			16
left still need		7
left still owe	7
left strip	4
left stuff	-19	15
left supply	15
left swap	-13			33
left swap for	-19	19
left take	-13			9
left that be	-9	-10		27
left that eat	-7		-6	24
left that want	-5	9
left that with				10
left that's	-14			10
left the kitchen	20
left the lady want	-14	18
left the other				-5
left the right	-7	14
left them					6
left there be	9
left there is	-10		26
left there's			18
left there's only	-18	-11	31	-15
left they're	11
left thing	-7		16
left think			4
left those		-4
left those and	-5	32
left through				34
left throw	-31	25
left tighten	5
left tile	-5	10
left to bring	4
left to buy		6
left to get	8
left to move	8
left to put	-24	17		7
left truck eat	8
left try			11
left under it		12
left up from	4
left up in	15
left up on	-8			21
left us	-7	25
left use				26
left use about	-19			27
left use up	-17			28
left wait on		10
left wall	9
left wash	5
left we have			6
left we need	-13	25
left we use	-9			35
left we want	-24	28
left we're		18
left white and	-21	18
left with the			10
left you	10
left1 &	-15			7
left1 +	-24
left1 @	7
left1 add	-9			6
left1 all				29
left1 another	22	-12
left1 around	7
left1 as	7
left1 ask	16
left1 b	11
left1 back						10
left1 between	7
left1 black	4
left1 blow				5
left1 br	-7			15
left1 break	-5	7
left1 bring		14
left1 burn				20
left1 buy	-14	8
left1 clip	-32	6	11	11
left1 closet			10
left1 come			7
left1 count	-13	9	15	-13
left1 cover	7
left1 cut out	4
left1 down				10
left1 drill	9
left1 drip	4
left1 drive	-12			29
left1 eat				26
left1 em	-5	16
left1 exam	20
left1 fifth	10
left1 figure		31
left1 fill	11
left1 first	-7	18
left1 fit				12
left1 flush	17
left1 foam	-8	-7		30
left1 forget	-6	14
left1 give	7
left1 glue	6
left1 good			14
left1 grab	-19	19			8
left1 half	-18		23
left1 hand			12	-4
left1 here	-30	-10	37	-6
left1 him		5
left1 i'm		7
left1 i've	7
left1 into	4
left1 land	7
left1 laundry	8
left1 lay	-5			17
left1 living room	9
left1 long	14
left1 loose	13
left1 lose	6
left1 make	8
left1 maybe	-19		42
left1 me	-8	23
left1 miss		16
left1 mix				22
left1 need		21
left1 new	-28	31
left1 no	15	-9
left1 old	16
left1 one's	6
left1 only			13
left1 order	-14	17
left1 outta	17
left1 owe	-5	13
left1 pack				13
left1 past	7
left1 patch	10
left1 pick	6
left1 please		11
left1 plug	5
left1 point	9
left1 pour	-12			24
left1 prime	-8			14
left1 quick	7
left1 rate	8
left1 read	7
left1 replace	-10			10
left1 rest	-45	-16	48	-22
left1 return				-6		27
left1 right	-7	14
left1 sand	-7	6
left1 screw	-6			18
left1 send	-13	5
left1 set				12
left1 short	-24	41
left1 side				5
left1 sign	-12		19
left1 spend	-26	-9	-8	35
left1 stack	-14			24
left1 stand		10
left1 stick	-9			11
left1 still	-8		24
left1 strip	4
left1 stuff	-19	15
left1 supply	15
left1 swap	-13			33
left1 t finish.	-29			15
left1 t tool.			11
left1 take	-13			9
left1 that's	-14			10
left1 them					6
left1 there's			18
left1 they're	11
left1 thing	-7		16
left1 think			4
left1 those		-4
left1 through				34
left1 throw	-31	25
left1 tighten	5
left1 tile	-5	10
left1 try			11
left1 us	-7	25
left1 use				26
left1 v buy.	-26	26			4
left1 v need.		18
left1 v return.	-12	-7				25
left1 v use.				26
left1 wall	9
left1 wash	5
left1 we're		18
left1 you	10
left2 (		-24	17
left2 )	19	-5
left2 +	-29	25
left2 -		9
left2 /	-6	7
left2 about	27			-12
left2 again	-5			24
left2 air	10
left2 am			9
left2 attic				5
left2 away	7
left2 bad	19	-11
left2 bag	-17	7		7
left2 bathroom	20
left2 bay	14
left2 bend	15
left2 between	16
left2 big	8
left2 black			8	-6
left2 block				5
left2 blow	10
left2 bolt	-10			20
left2 book	9
left2 bottom	12
left2 box	-4	13
left2 bracket		22		-7
left2 bring	-12	11
left2 burn				19
left2 can	4
left2 cap	-20			18
left2 change	-28	-4		27
left2 clean	9
left2 clip	4
left2 closet	19
left2 code	15	-5
left2 could		14		-22
left2 cover	18
left2 dead	4
left2 didn't	-5	8
left2 ding	5
left2 dog	4
left2 don't	20
left2 drain	7
left2 drop	12
left2 each	29	-18
left2 eat				17
left2 em	23
left2 enough	-5		18
left2 even			6
left2 fill	-26			38
left2 first coat	-16			21
left2 flash	9
left2 flat	6
left2 foam	-10			25
left2 frame	5
left2 garage	11
left2 glue				5
left2 gonna		10
left2 good	8
left2 gray			-5
left2 grout	14	-4
left2 guy	9
left2 half	-10		19
left2 hand	17
left2 hard		-8		7
left2 head		6
left2 her	10
left2 here	6
left2 high	13
left2 homeowner	9
left2 hook	7
left2 house	13
left2 i'd		26
left2 i'm		17
left2 i've	-7		32
left2 inspector	9
left2 instead	18			-12
left2 it'll	-6	15
left2 just				5
left2 ladder	6
left2 last	-30			27
left2 lay	-12
left2 leave			21
left2 let go	22
left2 lid	-11			23
left2 like	-16	-6		29
left2 line	-7			16
left2 lot		-8
left2 luis	4
left2 make		14
left2 measure	11
left2 miss		16
left2 move	17
left2 mud	-21	14		7
left2 must	8
left2 nail	-7			19
left2 need	-11	22
left2 never	20	-5
left2 new	-11			18
left2 nobody	8
left2 nothing	19
left2 now				5
left2 number				6
left2 only			10
left2 order	-4	11
left2 owe	-22	23			12
left2 owner	23
left2 pack	-19			26
left2 pantry	-4			15
left2 peel	11
left2 pick	-27				39
left2 place	-11			17
left2 plate		11
left2 plug	8
left2 pull	19
left2 put	-13			37
left2 roof	5
left2 sand	10
left2 scribe		8
left2 seal	-6			22
left2 second				12
left2 second coat			5
left2 see				5
left2 send						20
left2 sheet	9
left2 shim	-14	-13	13	9
left2 shop	-14		11	5
left2 short		14
left2 should	15
left2 side	22
left2 silicone		-4			14
left2 slip	20			-9
left2 snake	10
left2 soft	-17		6			9
left2 sound	13
left2 splice	13
left2 stairs	6
left2 stay	-10	-9	27
left2 strike	-19	25
left2 swap				13
left2 take						13
left2 tear	5
left2 test	13
left2 the lady		5
left2 there's	-4		36
left2 they're	6
left2 this				4
left2 through	10
left2 tight	23			-8
left2 tile	8
left2 till	15
left2 truck	12
left2 turn	9
left2 unit						16
left2 upstairs	7
left2 use	-24			49
left2 v need.		8
left2 v use.	-24			49
left2 walls	25		-9
left2 want	8
left2 water	14
left2 way				11
left2 we'll	-32	37
left2 we're		6		-8
left2 white	-44	9	28	-9
left2 wide	12
left2 will	-9	25
left2 won't		6
left2 would	-6	11
left2 wrap			5
left2 wrong	5
left2 you	10
left3 )	4
left3 +	9
left3 again				5
left3 already	-13				13
left3 another		5	-10
left3 any	-14	19
left3 are				29
left3 back	-21			8
left3 behind	10
left3 black		10
left3 blow	-5	12
left3 board	-23	19
left3 both	28			-15
left3 bottom				6
left3 box	10
left3 bracket	26	-10
left3 break	10
left3 bring	4
left3 buy					6
left3 can't	-11			16
left3 caulk	-24	10	20
left3 clean				11
left3 coat		6
left3 corner						17
left3 day	16
left3 dent	6
left3 drip				4
left3 drop	4
left3 each		-12		7
left3 electrician	25
left3 em	19
left3 end				14
left3 find	4
left3 finish	-16			26
left3 first	-10			17
left3 fix	-11	11
left3 float	-12			16
left3 floor				6
left3 from	5				11
left3 front	-4			12
left3 garage	6
left3 give				14
left3 glue	33
left3 gonna		9		-4
left3 good		6
left3 gotta	7
left3 hall	8
left3 hand	9
left3 he					4
left3 her	17
left3 his	10
left3 holes	11
left3 hook	-7			7
left3 hot	11
left3 house	-5			23
left3 i've	-15		16
left3 if	16
left3 inch		12
left3 into	-22	18
left3 its		6
left3 just				5
left3 keep	9
left3 kitchen	6
left3 last	-11			14
left3 leave			17
left3 let	6
left3 lid	21	-11
left3 living room	11
left3 long	-7	14
left3 maybe	-8		16
left3 miss	17
left3 more		7
left3 must		11
left3 my	16
left3 nail	6
left3 new				15
left3 number	13
left3 nursery	-27	-11		33
left3 office	5
left3 ones	10
left3 only	17
left3 open	5
left3 out	6
left3 outside	17
left3 pack		6
left3 painter	7
left3 pick		14
left3 pipe				8
left3 pull	17
left3 read	8
left3 replace				19
left3 right	5
left3 rod	12
left3 roll	-8		15
left3 sand	11
left3 screw		11
left3 send	-10	12
left3 she's	9
left3 shim	17
left3 shop	-17	31
left3 short	-14	18
left3 sister	-10
left3 so	-27	23
left3 somebody	-9	17
left3 swing		11
left3 tape	23
left3 the lady	-7		17
left3 their			4
left3 them			8
left3 then	18
left3 there's	7
left3 they	4
left3 those				5
left3 tie				8
left3 too		5
left3 top		-6
left3 truck	8
left3 use	35			-20
left3 water	16
left3 weight	30	-6
left3 were	11
left3 white		15		-12
left3 whole	8
left3 wire				12
left3 within	10
left3 won't	6
left3 x		16
length after have far	-27	28
length after have here	27
length after need far	-6	-9	10
length after need here		12
length after need sentence	-6	37		-8
length after used sentence	-26		8
length beside figure	-12	21
length beside get	-40		31
length beside is	6
length beside need		16
length beside need b nobody	-6	22
length beside need b person	-5	21
length beside nothing	-12
length beside other b nobody		19
length beside other b other	23
length beside other b person	-34	24		13
length beside other p other			15
length beside other p person	-18		27
length beside other pp other	10
length beside run				13
length beside snake	17
length beside undefined is other	9
length beside use	-23			31
length beside use pp nobody	-15			24
length beside want	-17	29
length beside work b nobody	16
length beside work b other		10
length beside work pp nobody				5
length beside work pp other	4
length beside work pp person	-25	-11		37
length buy imperative behind	-8	19
length cue have	-22		61	-5
length cue need		45
length cue used				23
length have present behind	-19	-5	34
length kept	-31		33	-16
length left #	-31			14
length left about	-12
length left and	-25	43
length left at	30
length left by	7
length left every	27
length left figure	-12	21
length left for	22
length left get	-29		21
length left in	6
length left it				10
length left it's	19
length left need	-31	41
length left of	27	-30
length left over	20
length left run	-12			23
length left the	30	-15
length left up	-19	4		12
length name flawed	-32	16
length named before fixture	15
length named before surface	-5			20
length named here material	-53	46
length named here part	-35	25		7
length named here surface	-25		7	7
length named here word	-8	18
length need modal behind	-28	37
length need owed behind		20
length null none no	-10
length other imperative behind	-10	33
length other past behind	-15		36
length pointing	-18		25
length right Q	32	-15
length right across	13
length right and		15
length right down	12
length right from	18
length right in	-21	-6	8	18
length right leave	-36		46
length right of	-31		25	9
length right to		7
length right up		-20		18
length right with	13	-9
length says copula before	-25	12
length says copula behind not	6
length says imperative behind		22
length says modal behind		18
length says none no	-10
length says owed behind		21
length says past before	-36	-13	4	33
length says past behind	-10			24
length says present behind	-30	5	12
length sized	-85	32		27
length sold so true	-17	13
length then move pp	-23		41
length then work b	-20	24
length then work pp		10
length use past behind				16
length verb get behind	-44	10	30
length verb have behind	-19	-5	34
length verb need behind		25
length verb null no	-10
length verb pull behind	-18			26
length verb put behind	-35			38
length verb run behind	-7	-6		20
length verb use behind				16
length verb want behind	-19	30
length whole clause	-21	22		7
length work imperative behind	22
length work past behind	-12			37
list have	-15		50	-27
list need	-17	62		-22
list used	-17	-31	-14	49
many	17
marked	-18	34
meant back 1	-8
meant back 6	6			-10
meant back 8	51		-19	-12
meant before more	-6	5	5	-5
meant before no		17
meant flawed false	19
meant place -		25		-12
meant ran out	-22	44		-7
more		35
named before area	-7			9
named before tool	-17
nameless	19
next copula other comma	23
next none other comma	-31	25		5
next none same run-on	5
next present same stop	7
next use buy imperative same	-15	36
next use buy modal other	15
next use buy modal same	-18	16
next use buy owed same	-32	23	13
next use buy past other	30	-8
next use have imperative same	28
next use measure modal other			8
next use measure owed other		18
next use move present other		17
next use need modal other	9
next use need past other	-12	-11	25
next use need past same			5
next use null imperative other	-7
next use other owed other		10
next use return past other	10
next use return past same	-32					37
next use return present same	7
next use use imperative same		-9		15
next use use modal same				-5
next verb add same	17
next verb arrive other	7
next verb auger same	20
next verb bed same	-17			24
next verb believe same	-8		16
next verb bin same	16
next verb blow same	19
next verb bolt same	-35			44
next verb box same	10
next verb bring other	4	-6
next verb buy other	9	-12
next verb buzz same	16
next verb call other	21
next verb can same	-10		7
next verb cap same	20
next verb change other	23
next verb choose same		7
next verb chuck same	15
next verb clamp same	7
next verb clean other	20
next verb clip other	22
next verb clip same	13
next verb coat same				10
next verb come other		11
next verb complete other	-5	16
next verb consum other		-6	14	-15
next verb count same			22	-5
next verb cut out same	24
next verb dig same	8
next verb do other				8
next verb drain same				16
next verb draw same	9
next verb drill same	8
next verb drip other	-12			28
next verb drip same	-9	23
next verb drive same				11
next verb drop other	15
next verb dry other			-4	8
next verb either same	20
next verb empty same	-28	-12	-16	-6	36
next verb exchange same	6
next verb feather same	18
next verb figure same	23
next verb find same	8
next verb forget same					14
next verb give same						21
next verb glue other	31			-13
next verb go other		31
next verb grab same	-7	10
next verb guess same	7
next verb head same		-26	13
next verb hit other	9
next verb hold other	5	-14
next verb hold same	15
next verb hum other	19			-4
next verb hum same		7
next verb i'd same	14
next verb know same	6
next verb lay other	-12	-18		29
next verb lean same	-15	6		8
next verb lift other		-8		8
next verb like other	-9	9
next verb look other	7
next verb make other	5
next verb make same	8
next verb mark same	20			-6
next verb mention same	14
next verb mount same	-25	17
next verb mud same	23			-6
next verb must same	13
next verb order other			5
next verb order same	-16	27
next verb owe other		14
next verb paint same			8
next verb pass same				6
next verb patch same	17
next verb pick other	6
next verb pin same	10		-7
next verb pitch same				11
next verb plug other	7
next verb plumb same				8
next verb point same	4
next verb pop same		14
next verb prime other	-17			28
next verb promise same	8
next verb pump same	21			-5
next verb purge other	9
next verb put other	6
next verb rake same	-7		25
next verb rate same	15
next verb reach same	6
next verb recheck other				11
next verb recut same	6
next verb refix same	23			-9
next verb refuse same	-19					29
next verb reglue other	12
next verb rehang same	5
next verb reorder same	-24	29
next verb repair same	-24	8		11
next verb replace other	6
next verb require other	-35	-18	30	8
next verb require same	-10		19
next verb reroute same	10
next verb reseat same	6
next verb return other			14	-11
next verb return same	-20					31
next verb rust same	-7	-16	5	9
next verb save same	13
next verb say other		14
next verb see other	18
next verb seize other	5
next verb send other				9
next verb shave same	9
next verb short same	-25				18
next verb should same	-5	19
next verb show other	4			-6
next verb sign same	18
next verb sister same	14
next verb sit other	-15			19
next verb size same	-9	7
next verb skim same	11
next verb slap same	-14	11
next verb snap same				6
next verb sort same	18
next verb sound same	18
next verb spin same	8
next verb split same	5
next verb spray same	-10		19
next verb stain same	10
next verb staple same	7
next verb stay same			19	-22
next verb straighten other	7
next verb stretch same	6
next verb strip other		-16		16
next verb swing same	-13			10
next verb take other	-7		9	-16
next verb tap same	13
next verb thin same		11
next verb touch same	17	-5
next verb trip same	18
next verb try same	11
next verb turn same	13
next verb veed same	7
next verb walk same	-11
next verb want other			4
next verb weep other				11
next verb will same		12
next verb wire same	-4			20
next verb won't same	16
next verb wouldn't same	21
next verb wrap same		6
next verb wrote same	-7	12
next verb yank same				8
one after bought sentence	-24	15			20
one after have far	6
one after have here	22
one after have sentence		11
one after need far	-14
one after need here	-23	45
one after need sentence	-10
one after none far	-18
one after none here	5
one after used here	-8			33
one beside add	-8	4
one beside bring		15
one beside buy	-17			-10	8	15
one beside buy b nobody	-9	26
one beside buy b other	-20	27
one beside come		6
one beside cut				4
one beside do	-11	19
one beside eat		-5		7
one beside find	18
one beside get	-14
one beside glue	-6			13
one beside grab	-23	31
one beside have pp person	-5			15
one beside hit	10
one beside make	9
one beside measure bpp other	12
one beside measure pp person		5
one beside measure s other	8
one beside miss		8
one beside need		16
one beside need b nobody	-23	31
one beside need b person	-6	23
one beside need s nobody	-10	18
one beside need s other		11
one beside nothing	-5
one beside order	-20	5			21
one beside other b nobody	-12	30
one beside other b other		14
one beside other i other		17
one beside other p person	-20		31
one beside other pp nobody	8
one beside other pp other	-7	16
one beside other s other	10
one beside owe	-24	23			11
one beside put	-25			39
one beside say	12
one beside scrape	5
one beside see	13
one beside send	-21	31
one beside set				7
one beside sister	-17			26
one beside sit	7
one beside stick	-8			8
one beside swap	-45			34
one beside take		4
one beside throw	-10	8
one beside try	-4		15
one beside use				12
one beside use pp nobody	-11			19
one beside want		17
one beside work bpp nobody	-9			33
one beside work bpp person	-17			34
one beside work i other	13
one beside work i person		12		-9
one beside work pp nobody	-20			42
one beside work pp person				15
one beside work s other	11
one buy imperative behind		19
one buy past behind	-45	-16		-15	38	14
one cue bought	-40				28	6
one cue need	-12	46
one false	-9
one kept	-38		21
one left #	-25	5
one left +	-22	17		5
one left about	15
one left add	-8	4
one left and	-49	32		10
one left as	14
one left be	-6		4
one left bring	-11	23
one left buy	-17			-10	8	15
one left by	20
one left cut				11
one left down				11
one left get	-8
one left grab		10
one left hit	8
one left it's	-16	30
one left just	-5	15
one left like	5
one left make	4
one left me	-6	25
one left miss		9
one left need	-6	24
one left not	7
one left off	14
one left order	-8				24
one left over	6
one left put	-11			21
one left send		15
one left set	-10			18
one left sister	-12			21
one left stick	-16			14
one left take		11
one left them		-27			22
one left to	22
one left try	-7	-4	18
one left use	-21			32
one left want		14
one left with	-16			5
one measure modal behind	-39	42		-7
one measure present behind	15
one move owed behind	-9			-6	21
one move present behind	5
one named before area	-15	13
one named before material	-33	20
one named before part	-49	6		16
one named before surface	25
one named before tool	-41	6	9		14
one named here defect	5
one named here finish	-39	45
one named here material	-28
one named here part	-72	12		21
one need modal behind	-6	12
one need owed behind	-4	25
one not ahead	8
one null copula before	-5	20
one null modal behind	-12	23
one null none no	-19
one other copula before	-14	6
one other imperative behind	-17	30
one other modal before	-11	17
one other modal behind		24
one other owed behind		12
one other past before		16		-11
one other past behind	-4		16
one right a	-33	38
one right about	6
one right and	-40	39
one right are	-33	16		20
one right behind	-8		14
one right from	-10
one right get	-9	23		-14
one right has	19
one right in	-13			10
one right is	-5	15
one right leave	7
one right no	38	-19		-11
one right of				4
one right or	22	-11
one right out	-7			5
one right over		-11		21
one right right	6
one right the	-21	15
one right there		7		-5
one right through	20
one right too	-21	30
one right under	-4			13
one right up	4
one right when		13
one right with	5
one say present behind		12
one says copula before	-22	21
one says imperative behind		12
one says modal before	-5	12
one says modal behind		29
one says modal behind not		8
one says none no	-21
one says none no not		12
one says owed behind		19
one says owed behind not					6
one says past before	-29	6		12
one says past behind				10
one says past behind not				10
one says present behind not	26
one sized	-40	19
one then move b	-5	16
one then move pp	20
one then move s	-14	22
one then other b		6
one then other i	-18			10
one then other p		6
one then other s	23
one then undefined is	-12	6
one then undefined will	-12	14
one then work i	-8			17
one then work pp				28
one then work s		10
one true	-9	24
one use past behind				6
one verb add behind	-15	11
one verb be before	-14	6
one verb bring behind	-12	26
one verb buy behind	-15			-5	11	12
one verb come behind	-15	28
one verb do behind	-12		13
one verb find behind	23
one verb get before	-10	26		-14
one verb get behind	-23	6	10
one verb go behind					12
one verb grab behind	-13	26
one verb hang behind	-11			16
one verb like behind	-5	14
one verb make behind	7
one verb need behind		16
one verb null before	-5	20
one verb null no	-19
one verb order behind		-6			30
one verb owe behind	-22	14			16
one verb pour behind	18
one verb put behind	-18			33
one verb scrape behind	5
one verb see behind	10
one verb send behind		11
one verb set behind				10
one verb sister behind	-17			26
one verb sit behind	8
one verb stick behind	-10			10
one verb swap behind	-34	7		19
one verb take behind	8
one verb throw behind	-10	8
one verb try behind	-4		15
one verb use behind				7
one verb want behind	-9	20
one whole clause	-5
one work imperative behind	-5
one work past before	-40			30
one work past behind				38
opens because	5
opens clause area	-19			43
opens clause count	-35			9
opens clause length	-31			14
opens clause one	-25	5
opens clause pack	-35
opens clause volume	-43	5
opens clause weight	-36	15		21
opens now	5
opens ok	26
opens please		22
opens plus	-9	32
pack after bought here		-37	-19	-29	44
pack after bought sentence	-14	-23	-4	-33	49
pack after have far	-21		25	-8
pack after have here	33			-27
pack after have sentence	-13	18	11	-5
pack after need far		6	6	-7
pack after need here	-6	48
pack after need sentence	-5	44		-21
pack after none far	-25
pack after none here	-18	15
pack after none sentence	-8
pack after returned far	-10				7
pack after used here	-13	-5		34
pack after used sentence	-32			13
pack bag	12
pack beside bring		8
pack beside burn				27
pack beside buy	-21				21
pack beside buy b nobody		8
pack beside buy b person	-39	18			16
pack beside call	-7	5	-6	7
pack beside come	-28	-31			32
pack beside do	-36		-11	25
pack beside eat	-18			31
pack beside fill				14
pack beside get	-6		11
pack beside go				26
pack beside grab	-20	28
pack beside hang	-23			20
pack beside have	-8		40
pack beside have b nobody	-11		26
pack beside have b person			38
pack beside have pp person	36		-22	-12
pack beside is	-14		13
pack beside leave			22	-6
pack beside miss	-6	16
pack beside move b other	21	-11		-14
pack beside move p nobody	-9			26
pack beside move p other		-4		30
pack beside move p person	-9			33
pack beside move pp other		-15	16
pack beside move pp person	-16		32	-7
pack beside need		14
pack beside need b nobody		19
pack beside need b other		28
pack beside nothing	-40
pack beside open	-12	-22	14	7
pack beside order	7
pack beside other b nobody		32
pack beside other b other	-26	38
pack beside other i other	-15	31	-6	-9
pack beside other p nobody	-13	-24	15		6
pack beside other p other	-14	-17		58
pack beside other p person			55
pack beside other pp nobody	-21	-28	12	-18	27
pack beside pick	-10	15		-7	10
pack beside put	-25			7
pack beside run		-16		26
pack beside set		-5		16
pack beside take	-44			32
pack beside use				25
pack beside use b person	-8			16
pack beside use pp nobody				6
pack beside use pp other	-13			25
pack beside use pp person				35
pack beside want		28
pack beside work b nobody	-16		14
pack beside work b other	-14	22
pack beside work b person	-5	-29	13	9
pack beside work bpp nobody	-47	12	-10	18
pack beside work bpp person		-22		12
pack beside work i other				6
pack beside work pp nobody				16
pack beside work pp other	-22			38
pack beside work pp person	-13			48
pack box	9
pack bucket			14	-12
pack buy imperative behind		16
pack buy modal behind	-25	33
pack carton	-13		14	-9
pack cartridge				5
pack coil	9
pack cue back	-8				5
pack cue bought	-37	-19	-23	-7	61
pack cue have			65
pack cue need		66
pack cue used				7
pack drum	9
pack flat	41
pack have present before			-16	-10	17
pack have present behind	-17		40
pack kept	-14		44
pack left #	-35
pack left +				7
pack left G	-34	-11		46
pack left Q	-33	48		-36
pack left T	-48	-35		13	29
pack left a	-7		-7	-12	20
pack left about	-13			5
pack left and	-20	37
pack left be	-20	9	-11	15
pack left bring	-10	11
pack left buy	-6	19
pack left from	8	7	-10	-17
pack left get	-49		50
pack left go	-16	-8		32
pack left grab	-13	11
pack left have	-5		24
pack left is	-12	20		-15
pack left it	-34	41		-16
pack left last		-9	20
pack left leave	-9	-23	40	-16
pack left me		13
pack left of	5	-13
pack left on	6	-23	-20	8
pack left order	-14	23
pack left over	14	-6
pack left put	-12			7
pack left short	-10	37	-7	-7
pack left take	-35			36
pack left that's	-23	-5	-38	43
pack left the		-27	10
pack left there's		-21	47	-12
pack left through				44
pack left to	-6	-21	5	6
pack left up	-5
pack left use				8
pack left want	-21	38
pack left with	-30		-12	48
pack list have	-30		34	-38
pack list need	-8	48	-16	-20
pack more	-13	70		-7
pack move past before	-6		35
pack move past behind	-6			8
pack move present behind	-5		19	-14
pack name flawed	-13	4
pack named before area	-16	-32		32
pack named before fixture				7
pack named before material	-7
pack named before surface		-6	4
pack named before word	-8
pack named here fixture		9		-9
pack named here material	-41
pack named here part				-36
pack named here surface	-14	21		-15
pack named here word	-59
pack need modal behind			4
pack need owed behind		25
pack need past before	-30	43	-8	-17
pack need present behind	-24	38
pack not ahead	-26	42
pack null copula before	-17	30	-23
pack null copula behind	-29		12
pack null imperative behind	-6	24
pack null none no	-34
pack other copula before			8
pack other copula behind	-19			21
pack other imperative behind	-4	29
pack other modal behind		35		-13
pack other past behind			19
pack pair	10
pack pointing	-13	5
pack right #	-27
pack right +				9
pack right Q	-34			6
pack right T	-38	18	9
pack right and	-32	6
pack right are	-5	-6	23	-10
pack right at	-18	8	16	-20
pack right be	9
pack right by					10
pack right for	-9		8
pack right from		5		-38	13
pack right go	-34	-21	-24	52
pack right have	7	5	-11	-9
pack right in	-5		46
pack right is	-11		8
pack right leave			41
pack right no	29	-21	5	-13
pack right of	-8
pack right on			23	-22
pack right out	20	-8		-12
pack right over	-33	-16	28	-31		19
pack right say	30
pack right short	-34	48	-4
pack right the	-46	22		5
pack right to	-24	18		-17
pack right under	4	-6
pack right up	31	-40	-7
pack right use				22
pack right where	-4	-9		23
pack roll		26	-11
pack say imperative behind	-18	19	-11
pack say modal before	23
pack says copula behind	-32		8
pack says copula behind not	-11	28		-14
pack says imperative behind	-16	43
pack says modal before	-12	16
pack says modal behind	-5	37
pack says modal behind not		-23	31
pack says none no	-31
pack says none no not	-17	34	-12	-23
pack says owed behind		32
pack says past before	-25		11
pack says past behind				17
pack says past behind not	-10			5
pack says present before		6
pack says present behind	-24
pack says present behind not	30
pack sheet	21			-14
pack sized	-31	10
pack sold so false	-44
pack sold so true	-37
pack stick	7
pack strip	-6			5
pack then have b				-16
pack then move p	-38	-18	-19	56
pack then move pp			29
pack then need pp	-30	42		-11
pack then other b	16	-34	15	-14
pack then other s	17			-15
pack then undefined is	-13		17
pack then undefined will	-35	45		-5
pack then use pp				22
pack then work b			-19	8
pack then work s	-24	6
pack tin				-10
pack tub	34
pack tube		7		-13
pack use past before				22
pack use past behind				26
pack use present behind	-19			28
pack verb be before			8
pack verb be behind	-21			19
pack verb blow behind	-14			8
pack verb bring behind		13
pack verb burn behind				12
pack verb buy behind	-18				17
pack verb do behind	-31	16		10
pack verb fill behind				9
pack verb finish behind	-25	-25	-13	42
pack verb go behind	-9			23
pack verb grab behind	-14	30
pack verb hang behind	-23			20
pack verb have before			-16	-10	17
pack verb have behind	-12		37
pack verb leave before			34
pack verb leave behind	-9	-18	42	-17
pack verb make behind		-14		18
pack verb need behind		13
pack verb null before	-17	30	-23
pack verb null behind	-29		16
pack verb null no	-34
pack verb order behind	10
pack verb pick behind	-9				24
pack verb pull behind	11	-9
pack verb put behind	-10	12
pack verb run behind	-8			26
pack verb say before	8
pack verb set behind	-13	-18		28
pack verb take behind	-48		6	22
pack verb throw behind	-31			-8	20
pack verb use behind				28
pack verb want behind	-22	31
pack whole clause	-52
pack work imperative behind	-28
pack work modal behind	-7	12		-12
pack work owed behind	-25	28		-7
pack work past before	-43	-32		38
pack work past behind	-17			55
pack work present before	-27	25		-8
pack work present behind	-20			41
plural area				15
plural count	-26
plural one	-10	7
plural pack	-6
plural volume	-26	11	12
plural weight	-19	22
pointer beside nothing	7
pointer cue have	5
pointer cue used				7
pointer left Q				8
pointer left new				10
pointer named before material				14
pointer null none no	6
pointer right #				5
pointer says imperative behind	5
pointer says none no	6
pointer says past behind	-20			15
pointer verb null no	6
pointer work past behind	-9			15
pointing	-36
right &	-20	18
right (	-14			-5
right ( Q		-6	6	-7
right )	-12	15				7
right +	-14
right + G	19
right + Q	-34	10		15
right + a	-21	19
right /	-15			9
right / G	-14	30		-13
right =	13
right @ Q	-24	14		11
right Q G				9
right Q Q	23
right Q all	15
right Q and	17
right Q to	20			-4
right T if	22	-15
right T the	5
right T to	-4	12
right a G		7
right a Q	-26	37
right above	6
right above the	15
right across	9
right across #	12
right all around	14
right all round	10
right already			7
right and G	-9	19
right and N	-4	10
right and Q	-13	15
right and a	-42			4
right and it	9
right and then	8
right are Q	6
right are hang	-12			20
right are in	-17		23
right are on				11
right are up	-12			31
right around the				19
right arrive			13
right back on		18
right be leak	-8	16
right before i		11
right behind #	4
right bend	7
right bend #	15
right bow	8
right box						9
right bring	4
right by G	27	-6
right can	-5
right can't		5
right change				8
right chip	14
right clip	-6			5
right come Q	-22		19
right come T					11
right come back	11
right come with			15
right complete	-7	14
right crook	15
right cup		10
right cut				5
right cut #				12
right dead	13
right dead #	14
right didn't				8
right doesn't	13
right don't let	-6
right drill	17
right each	-7	-6		15
right each #		-12		21
right eat	7
right extra	-33		8	8
right fill				6
right finally	7
right finish #	5
right fit				20
right fit #	-18			32
right fix				10
right flush	5
right for G	-34	29
right for Q	12
right for now	-17			29
right for that	-24	15	8
right get #	-13		5
right get Q	23			-8
right get no		5
right get the	-13	19
right glue	-18			31
right glue #				14
right go #				18
right go Q	8
right go down	6
right go in				8
right go on				14
right go through	10
right good	-9		20
right good #	-9		18
right has no	18
right hasn't	-7	13
right have #	12
right have the	29	-7
right head	-8	10
right here			30
right here #	-18		34
right i have	-31		36
right i no	11
right if you	9
right in #				52
right in Q	13
right in T	12			-8
right in all	7
right in and	-23			28
right in hall	4
right in it				13
right in my	-19		36
right in the kids	24			-7
right into	-15	-15	-5	38
right is at		-14	19
right is bad	17
right is break	35
right is do	6
right is empty	-13	19
right is finish				6
right is go				23
right is gonna	-11	19
right is good	13
right is leave	-24	-6	13	15
right just	13
right leak #	12
right leaning		-9	13	-8
right leave			38
right leave #			43
right leave from			15
right leave in	-4		37
right leave of	16		-4
right leave on			4
right leave over			25
right like a	5
right loose			19
right lose	4
right more		10
right more #	-39	48
right more to	14
right mount				4
right mount #	-8			21
right my	22
right near	5
right near the	20
right need #		25
right next		6
right next #	-8	16
right no G	-29	27
right no sorry	27	-12
right nothing	10
right now is	-36			44
right of T	-11			19
right of each	-14	18
right of it			7
right of my	5
right of that		6
right of them	-8			21
right of those		7
right off #	4
right off it	18
right on #				8
right on G	-12
right on Q	9
right on every	21			-8
right on hand	-18	-16	42	-16
right on in	6
right on me	-32	35
right on my		6
right on order	-38				52
right on site	-16	-22	37	-25
right open #			9
right or	17
right order					7
right order #					20
right out #	12
right out Q	21
right out T		12
right out in				5
right out of				17
right over #	-7	-12	11	-11		14
right over it				5
right over to	20			-12
right pack		11
right paint	4
right peel		9
right pipe	11
right plug	10
right prime		12
right pull	8
right pull #	4
right pull out	11
right replace #	17
right roll			18
right roll #	-8		25
right rub	13
right rust	6
right sag #	11
right seal			15
right seize	11
right seize #	11
right short		26
right short #		31		-8
right short Q	12
right short by		11
right shot		12
right shot #		12
right should	-8	21
right since the	-10			19
right snap	12
right spare	-31	-10	39	-20
right split	21
right stain	-17			12
right still			24
right still in	-18		39
right still on	-30	-9	42	-32
right still to	27
right stop	-13			14
right stuff	-6	17
right swap				7
right swap #	-11			20
right sweat		13
right take the	6
right tape	-20			19
right tell	-5			13
right test #	5
right than the	10
right that go			5
right the N	18
right the Q	-33	33			5
right the box	21
right then	-5			11
right there		7
right there #		5
right they	-5		7
right through #	16
right through it	6
right to G	10
right to Q	19
right to be		20
right to go	19			-9
right to wall	8
right trim	-5			14
right turn			7
right under #				9
right under G	8
right under it	10
right under there	5
right until T	6
right up #				15
right up on				11
right up there	32	-13
right use				18
right use #	-13			35
right want #	-5	28	-14	-17
right which i			11
right which is	10
right while					8
right wire	-6			20
right wire #				10
right with #	20
right with G	19
right with Q	8
right with a	14
right with it	8
right with me		11
right with no	13
right without	11
right won't sit	-15					21
right would		13
right wouldn't	10
right1 &	-20	18
right1 (	-14			-5
right1 )	-12	15				7
right1 +	-14
right1 /	-15			9
right1 =	13
right1 above	6
right1 across	9
right1 already			7
right1 arrive			13
right1 bend	7
right1 bow	8
right1 box						9
right1 bring	4
right1 can	-5
right1 can't		5
right1 change				8
right1 chip	14
right1 clip	-6			5
right1 complete	-7	14
right1 crook	15
right1 cup		10
right1 cut				5
right1 dead	13
right1 didn't				8
right1 doesn't	13
right1 drill	17
right1 each	-7	-6		15
right1 eat	7
right1 extra	-33		8	8
right1 fill				6
right1 finally	7
right1 fit				20
right1 fix				10
right1 flush	5
right1 glue	-18			31
right1 good	-9		20
right1 hasn't	-7	13
right1 head	-8	10
right1 here			30
right1 into	-15	-15	-5	38
right1 just	13
right1 leaning		-9	13	-8
right1 leave			38
right1 loose			19
right1 lose	4
right1 more		10
right1 mount				4
right1 my	22
right1 near	5
right1 next		6
right1 nothing	10
right1 or	17
right1 order					7
right1 pack		11
right1 paint	4
right1 peel		9
right1 pipe	11
right1 plug	10
right1 prime		12
right1 pull	8
right1 roll			18
right1 rub	13
right1 rust	6
right1 seal			15
right1 seize	11
right1 short		26
right1 shot		12
right1 should	-8	21
right1 snap	12
right1 spare	-31	-10	39	-20
right1 split	21
right1 stain	-17			12
right1 still			24
right1 stop	-13			14
right1 stuff	-6	17
right1 swap				7
right1 sweat		13
right1 t area.	21
right1 t material.		15		-14
right1 tape	-20			19
right1 tell	-5			13
right1 then	-5			11
right1 there		7
right1 they	-5		7
right1 trim	-5			14
right1 turn			7
right1 use				18
right1 v buy.				11
right1 v use.				18
right1 while					8
right1 wire	-6			20
right1 without	11
right1 would		13
right1 wouldn't	10
right2 @				5
right2 about	27
right2 above	14
right2 along	-14	19
right2 already	24				-12
right2 anything		7		-4
right2 around	18
right2 balance	-4	-7	19
right2 before	5
right2 behind	6
right2 below				-9
right2 bend	7
right2 black	8
right2 book	11
right2 bore			5
right2 box			-8	9
right2 break				4
right2 build				5
right2 buy	-24	16		-27	14
right2 cap		6
right2 ceiling		6
right2 center	18	-9
right2 change	-19			25
right2 chip	-5					17
right2 close			15	-6
right2 complete	11
right2 cover		10
right2 crook	19
right2 dead	11
right2 deliver	-23				4
right2 drill	4
right2 drop	6
right2 eat	10
right2 empty	-4	12
right2 end	5
right2 entry	23
right2 every	18
right2 except	4
right2 extra	-26		21	-10
right2 floor			5
right2 for		17
right2 from	5
right2 front	-13			28
right2 gonna	-7	16
right2 half				8
right2 hand	-13	-13	40	-13
right2 have			9
right2 he	9
right2 her				-16
right2 here	9
right2 high	6
right2 him	-17					21
right2 hole	25			-20
right2 hollow	13
right2 home	-22		28
right2 if	14	-14
right2 install	-20			26
right2 into	6
right2 just	7
right2 keep	11
right2 latch	6
right2 lay	-20	13
right2 leaning	-9		16
right2 level	12
right2 living room				13
right2 long	7
right2 lower	5
right2 maybe	9
right2 me		6
right2 mine	-19	15
right2 mud	29	-14
right2 my			33
right2 near	12
right2 need	-20	40
right2 noon	15
right2 notch	13
right2 now				13
right2 oil	10
right2 once	14
right2 ones	-15	5	21	-19
right2 order	-22				43
right2 other	-9	-17	27	-23
right2 pass	12
right2 past	15
right2 piece	-9			22
right2 please		7
right2 plug	13
right2 plumb	17
right2 pop	16
right2 pull	9
right2 put	-18			15
right2 reach	7
right2 read	13
right2 red		12
right2 replace	-27			34
right2 rocking	7
right2 rot	19
right2 round	11
right2 run	28
right2 scratch	19	-5
right2 send	-14	15
right2 she	10
right2 show						8
right2 site	-16	-22	37	-25
right2 so	15
right2 soft	8
right2 some		7
right2 sorry	26	-8
right2 split	-18	4		9
right2 spray	15
right2 stand	8
right2 still	-11			11
right2 stop	-17		19
right2 strike	24
right2 strip	7
right2 supposed	-23				20
right2 t fixture.	6
right2 t tool.			11
right2 t work.		-10		7
right2 take	5
right2 tell	-15			20
right2 the kids	24			-7
right2 their		-9
right2 them	-4			18
right2 then	15
right2 this	24
right2 those	13
right2 tile		-15	19
right2 too		16
right2 too long	-16	19
right2 too short	19
right2 touch	7
right2 truck		-13	6	-6
right2 turn	11
right2 twist	15
right2 v buy.	-30				34
right2 v have.			9
right2 v need.	-13	35
right2 wait	8
right2 we	4
right2 when				5
right2 where	20
right2 while		10
right2 white	-17	28
right2 wrap	-7		16
right3 (			13	-8
right3 above	20
right3 across	14
right3 air	18
right3 already		-4			13
right3 anything	-5	15
right3 around	-26			34
right3 bag	-10	15		-8
right3 basement			12
right3 bathroom	-10			18
right3 bay	12
right3 belly	14
right3 below	6
right3 bend	5	-6
right3 big	9
right3 bolt	-5			15
right3 book	-6	13
right3 both	9
right3 box	-32		42
right3 bracket	-20			5
right3 break	-16		23	-5
right3 bring		4
right3 buy	-13	26		-6
right3 ceiling	5
right3 cellar			5
right3 clamp	-20	21
right3 clean	-14	14
right3 closet	5
right3 counter						15
right3 cover			14	-5
right3 cut	6
right3 dry		-13
right3 drywall	4
right3 edge	21
right3 enough	10
right3 first	-15		20
right3 first coat	14
right3 flat	13
right3 floor	6
right3 foot	10
right3 good	20	-5
right3 grind			7
right3 half	-9		15
right3 hall closet	10
right3 hand	-9
right3 hang	16
right3 have	-16		14
right3 he		12
right3 her	-14		5
right3 hole	7
right3 if		11
right3 inside	14
right3 it's	-12			18
right3 joint	-13		15
right3 just	7
right3 kitchen	4
right3 leak				4
right3 lid	-18	24
right3 lip	-7			12
right3 list		27		-13
right3 little	-24		13		14
right3 lock		4
right3 loose	7		-8
right3 make	12
right3 man		-6			7
right3 me				17
right3 off	5
right3 office	-12		13
right3 ones	-12	25
right3 only	12
right3 open	6
right3 opened up	20
right3 other	12
right3 outside	5
right3 over	24
right3 own	23	-16
right3 owner	13
right3 pantry			19
right3 paper	16			-6
right3 past	7
right3 patch				7
right3 porch	28			-10
right3 powder room	-24		16
right3 proud	11
right3 pull	9
right3 salon	-6			15
right3 same	19	-12
right3 scribe	7
right3 set	7
right3 shed	-18	-4	31	-18
right3 shop	-27		25
right3 short		7
right3 side	8
right3 solid				12
right3 stand	-10			16
right3 steps	14
right3 still	8
right3 store	-19		28	-25
right3 street	7
right3 study	-5		17
right3 tag	-7	7
right3 them		6
right3 then	8
right3 there	4
right3 they	23
right3 thing	-17			10
right3 though	-16	9		4
right3 truck	-18		23
right3 van	-26	-10	53	-21
right3 walk	13
right3 wall	9
right3 walls				4
right3 want	-4		25
right3 where	19
right3 which	6	-19	10
right3 white	6			-5
right3 whole				6
right3 wire		10		-16
right3 won't	8
right3 wrap		14
right3 wrong	23
right3 yet		11
sold so false	-5
sold so true	-37
sort area	-6			11
sort pack	-20
sort volume	-32
sort weight	-7
then arrive			5
then arrive pp			13
then bag		12
then bag b		16
then balance	19
then bend	19
then bend pp	9
then book pp		8
then bow	25
then bow pp	22
then box	-12		14
then box b	-16		11
then box s						5
then bring		5
then bring b	-17	16
then buy		5			5
then buy b	-12	7			25
then buy pp	-13	-15		5	23
then call	5
then call b	16
then change				6
then change pp				14
then check pp	10
then chip	13
then close s				4
then come bp	18
then complete		9
then complete b		11
then cover s		6
then crack b			9
then crook	13
then crook pp	13
then cup		8
then curl	9
then didn't					6
then didn't will					6
then do b	-19	24
then drill	17
then drill pp	17
then drop	7
then drop pp	8
then dry pp		-9	16	-8
then dust	11
then dust b	11
then feel	7
then feel s	7
then fill b				13
then fit				17
then fit pp	-18			30
then fit s	13
then fix				9
then fix pp	-5			12
then get b	-21	36
then get s	10
then glue	-14			31
then glue pp	-14			31
then go b	13
then go p				23
then hang b	32	-20
then hang i	7
then hasn't		6
then hasn't has		6
then head	-14			8
then head b	-14	7
then head s	-7			11
then hold b				11
then i've			7
then i've has			7
then keep	6
then keep pp	14
then label	-10		19
then land	8
then land b	19
then land pp	14
then leave			17
then leave pp			18
then leave s				8
then level	16
then lift i	10
then like	9
then like b	9
then look	10
then match		9
then match b		8
then measure bp	18
then mount				4
then mount pp				9
then move p				23
then move pp			15
then need pp		38
then open b	22
then open pp	-24		18	12
then order	-8				48
then order b	-24				49
then order pp					15
then own	25	-18
then own b	25	-18
then pack		10
then pack b	-10	18
then pass b		8
then patch				16
then patch pp	12
then peel		10
then peel i	-15	19
then pick	9
then pick s	9
then pipe	10
then pipe pp	12
then plug	8
then plug pp	8
then plumb	22			-8
then prime		13
then prime pp	-7	16
then pull i		10
then pull pp	11
then put bpp	6
then replace				6
then replace pp				6
then roll			9
then roll b		-4	18
then rub	13
then run bp	16
then rust	9
then sand	19
then say pp				5
then scratch	10
then scratch b	24	-6
then seal			5
then seal pp			15
then see b	11
then see pp	21
then seize	11
then seize pp	11
then set	4
then set bpp	16
then show b	15
then show pp	-23		15			16
then sit i			15
then smell	11
then sound	12
then sound b	19
then split	16
then split bpp	16
then squeak s	6
then stain	-11			11
then stain pp	-11			11
then stand				10
then start	9
then stay s		17
then stop s	-7			11
then strip b	-23		20
then strip pp	4
then stuff		15
then stuff b	-12	20
then swap pp				15
then sweat		5
then sweat s	5
then swing	6
then take b	9	-11
then tape	-20			19
then tape pp	-20			19
then tell	-18			26
then tell pp	-19			27
then tin	-24			6
then tin b	-24			6
then trim	-5			14
then trim pp	-5			14
then turn b			11
then turn pp	7
then use				23
then use pp				29
then wait	21	-9
then wait b	26	-22
then walk b	6
then want b	16
then want pp	-19	21	5	-10
then warp						7
then warp pp						7
then wire				15
then wire pp				15
then work bp	16
then would		10
then would will		10
then wrap	-5
then wrap pp			11
unit bag	-48			10
unit bottle				-14
unit box	-40
unit bundle	-28				10
unit can	-41			27
unit carton	-9	-15	47	-41
unit cartridge	-15	32
unit case	-27		26	-4
unit coat	52
unit each	-41	14
unit from said	-33
unit from shared	-57	23	6	-8	14
unit gal	-28
unit kg	-18		6	15
unit kit	-39		9	7
unit lb		6
unit length	-37		4
unit m	-16
unit pack	-17	19
unit pail	-32			18
unit pair	-14	17
unit pallet	-12		26	-24
unit pt	-11
unit qt	-57		33
unit roll	-55
unit row	14	-10
unit set	-7	7	-7	7
unit sheet	-23			13
unit sleeve	-22	13	7
unit square	-40			34
unit stick	-61	34
unit tin	-39	5		11
unit ton	-8			19
unit tub	-32
unit tube	-64
unit yd	-36	40
use buy before	-24				12
use buy imperative behind		24
use buy modal behind	-12	30
use buy owed before	-17	26
use buy past before	-23	-10		8	22
use buy past behind	-13	-20			69
use buy present behind	-21				33
use have owed behind	8
use have past behind	15
use measure modal before						9
use measure modal behind	-35	49
use move owed behind					7
use need behind		12
use need modal before	8
use need modal behind		14
use need owed behind		8
use need past before	-17	41
use need past behind	16
use need present behind		24
use null present behind			12
use other imperative behind		19
use other owed before	-6	13
use return behind	-30	-9		4		31
use return past behind	-45	-12	-5	9		36
use say modal before	19
use say past before	10
use see owed before	6
use use before				29
use use behind				15
use use imperative behind	-20			30
use use modal behind		20		-19
use use past before	-6			32
use use past behind				18
use use present behind				19
verb add behind	-6			5
verb add past	-35			44
verb adjust behind	8
verb arrive before			4
verb arrive behind		7
verb back past	-10	17
verb balance behind	-23		12
verb be past	6
verb bed past				12
verb bend before	15
verb bend past	12
verb blow present		15
verb bolt behind	-11			22
verb bolt past				17
verb bore behind	-10			21
verb bore imperative	-15			24
verb borrow past		12
verb bow before	23
verb box before				19
verb box behind	-5
verb box present				23
verb bring before			5
verb bring behind	-10	23
verb bring imperative		26
verb bring modal	-9	24
verb bring owed	19
verb bring past	-30	-30	11	-10		38
verb bring present	-13	24
verb build behind				6
verb build past				5
verb burn before	17
verb burn behind				22
verb burn past				17
verb buy before	-21	7	-8		11
verb buy imperative		27
verb buy owed		15
verb buy past	-16	-11			36
verb buy present	-7				20
verb call present	7
verb can before	-7	5		6
verb cap behind	12
verb cap past	10
verb change before				15
verb change behind	-11			13
verb change owed	-6	20		-6
verb change past	-18			27
verb change present	-8			30
verb chip behind	5
verb chip past	15
verb clean present	7
verb clear behind				4
verb clip before	-5			14
verb clip past				7
verb clip present				4
verb close past				6
verb close present	11
verb come behind					12
verb come imperative					7
verb come modal	-10	24
verb come past					6
verb come present					5
verb consum past	-24	-14	-7	37
verb could behind	9
verb could modal	9
verb count past			16	-9
verb cover before	24
verb cover behind	5
verb cover past	12
verb cover present	23
verb cut modal		7
verb deliver before			11
verb deliver past			20	-4
verb dial past	18
verb didn't modal	-12	18
verb ding behind	11
verb ding past	12
verb doesn't behind	8
verb doesn't modal	5
verb don't behind		4
verb drill before	12
verb drill past	8
verb drip past	5
verb drive behind				5
verb dry before	-5		7
verb dry modal	6
verb dry owed		8
verb dump before		10
verb eat behind				13
verb eat past	16
verb eat present	-10			17
verb falta behind		9
verb falta owed		9
verb figure imperative	-10	28
verb figure present	11
verb fill before	14
verb finish before				5
verb finish imperative				15
verb finish present				5
verb fit before				21
verb fit behind				16
verb fit past	-41			48
verb fit present	9
verb fix before	-13			30
verb fix behind				7
verb fix past	-22			40
verb flip behind			5
verb float behind		-4		18
verb flush imperative	16
verb flush past	18
verb foam behind	-6			19
verb foam past	-7			19
verb forget behind		4
verb frame behind	7
verb fre behind			11
verb fre past			7
verb get imperative		42
verb get owed		8
verb give present	-18					10
verb glue owed	7
verb glue past	-5			30
verb go past				26
verb gonna before		10
verb gonna behind	-25		28
verb gonna owed	-13		23
verb grab modal	-7	23
verb grab past	-21	-31		-17	39
verb guess behind	-7	16
verb guess present	-20	26
verb hang before				14
verb hang behind				9
verb hang imperative	-9		14
verb hang past	-6			49
verb haul past	-12	18
verb have past	15
verb head before				9
verb head behind		14
verb head present	-12	5
verb hit imperative	9
verb hold present	6
verb hook behind				19
verb hook modal	4
verb hook past	-9			22
verb i'll behind		10
verb i'll modal		10
verb install past	-17			28
verb knock behind	6
verb knock past	7
verb lay before	-4	7
verb lay behind	-10
verb lay modal		11
verb lay past	-14			23
verb lay present			6
verb leak before	6
verb leave before			26
verb leave modal	18
verb leave past			15
verb let imperative	5
verb level behind				5
verb lift behind	5
verb like behind		11
verb like modal	-6	22
verb make imperative	-5	5
verb mark behind	4
verb mark past	5
verb measure before	8
verb miss behind	-5	24
verb miss imperative	5
verb miss present		11
verb mix behind				16
verb mix past				19
verb mount before	-7			19
verb mount past	-37			44
verb move before	13
verb move past	15
verb move present			13
verb nail behind				5
verb need before		7
verb need behind		19
verb need owed		14
verb need past	-13	39
verb null present			12
verb open before			7
verb open past			5
verb open present	5
verb order before	-4				12
verb order imperative		17
verb order modal	-11	18
verb order past					43
verb order present	-20	5		-4	24
verb pack imperative	-4	12
verb paint owed	6
verb patch before	-16			19
verb patch imperative		11
verb patch past	14
verb peel behind	10
verb peel past	10
verb peg past	6
verb pick behind					20
verb pick imperative		32
verb pick past	-15	-4			62
verb pipe past	13
verb place behind	-17			25
verb place imperative	-19			27
verb plow past	26			-17
verb plug before	15
verb pour owed	11
verb pour past				8
verb prime imperative	21
verb push behind	6
verb push modal	7
verb put before	8
verb put modal	-8	16
verb put past				14
verb put present	-9	26
verb rate past		11
verb receive past	-43		29	-12	24
verb rehang behind				12
verb rehang past				13
verb relay behind	-7			15
verb relay past	-7			16
verb replace before	-24			36
verb replace behind				7
verb replace past	-10			37
verb reset imperative				14
verb reset past	6
verb return behind	-16			-8		32
verb return past	-26			-14		36
verb rock past	6
verb rod behind	-6	14
verb rod past	15
verb run imperative		7
verb sand behind	13
verb sand owed	8
verb sand past	8
verb save past			4
verb say imperative	9
verb say modal	17
verb scrape behind	4
verb scrape past	5
verb screw behind				4
verb screw past				4
verb scribe modal	8
verb seal before			13
verb see before		8
verb seize before	12
verb seize past	12
verb send before	-9	10
verb send behind						14
verb send imperative	-29	36
verb send modal	-8	18
verb send past	-5					25
verb send present	13
verb set modal	14
verb set past				7
verb shim behind	11
verb shim past	16
verb ship behind			4
verb should behind				12
verb should modal				12
verb show before			6
verb show past	-9		11
verb show present	6
verb silicone before	8
verb sister past	-5			24
verb sit modal	-15	12				7
verb sit past	5
verb size behind	18
verb snake behind	6
verb snake past	7
verb snap before		9
verb snug behind	16
verb snug past	16
verb spend behind	-22			33
verb split past	-12			19
verb spray before	16
verb spray past	12
verb stack behind	-9			22
verb stack past	-19			27
verb stagger behind	-6			13
verb stagger past				12
verb stain before	-20	6		8
verb start before	6
verb stay behind		-7	10
verb stay imperative		-16	17
verb stick imperative	26
verb stick past				14
verb stop before	-23		18	11
verb stop present	-14		13
verb strap behind	-20		10	8
verb strap imperative	-12		15
verb strike before	16
verb strike modal	16
verb strip before	10
verb strip past	9
verb stuff behind	-18			8
verb stuff imperative	-6
verb stuff past				14
verb supposed before	-5				19
verb supposed owed					13
verb swap before	-17			34
verb swap imperative		4
verb swap modal	17			-6
verb swap past	-8			39
verb swear behind	8
verb take behind						8
verb take imperative			8
verb take modal	-8	28		-13
verb take past						32
verb tap before	8
verb tape modal		6
verb tell before	18
verb tell past	15
verb test behind	6
verb test past	8
verb think past	4
verb throw past				6
verb tile past	6
verb top behind	17
verb top present	13
verb trim behind				6
verb trim past	-14			25
verb try imperative	-10		13
verb try past	13
verb turn before	11
verb turn behind	4
verb turn imperative	11
verb turn past	12
verb unopen past	-24	-7	36	-22
verb use before				29
verb use behind				15
verb use imperative	-20			30
verb use modal		14		-17
verb use past				26
verb use present				21
verb walk behind					16
verb walk past	-5				18
verb want modal		16
verb want present		16
verb will before	5
verb will behind	12
verb will modal	12
verb wire before				6
verb work behind			14
verb would modal	-13	18
verb wouldn't behind	-6	15
verb wouldn't modal		12
verb wrote behind	8
verb wrote present	8
volume after have far	-36	26		-18
volume after have sentence	-47	25	5
volume after need far		-9	29	-5
volume after need here	11
volume after need sentence	-38	42
volume after none far	-32		13
volume after none here	-21			30
volume after none sentence	-20			13
volume after used far	-13		26
volume after used here		-17	15
volume beside bring	-15	19
volume beside buy	-18	33
volume beside buy b nobody		17
volume beside figure		6
volume beside get	-19	12	8
volume beside go	-16			31
volume beside have	-24		41
volume beside have b person	-7		28
volume beside need		29
volume beside need b person	-13	41
volume beside nothing	-23		21
volume beside other b nobody		19
volume beside other b other	-31	27	-23	-28	15
volume beside other b person	-35	-11		31
volume beside other p other		-10	-10	18
volume beside other p person	-18		38	-7
volume beside pour	-24			32
volume beside take		-16		19
volume beside use				31
volume beside use pp nobody				20
volume beside use pp person				22
volume beside work pp other	-12	-12	-9	29
volume buy imperative behind		17
volume cue have	-25		66
volume cue need		26
volume cue used	-43			24
volume flawed	-19	12
volume have present behind	-9		33
volume kept	-26		23	-22
volume left #	-43	5
volume left about	24			-6
volume left and	-33	8			10
volume left buy	-19	30
volume left figure		6
volume left get	-9		10
volume left have	-25		36
volume left maybe	-6		20
volume left me	-9	31
volume left need	-6	38
volume left pour	-24			32
volume left take		-7		9
volume left through	-9			24
volume left use				18
volume more	-22	29
volume move past before	-22	-13	5	18
volume move past behind	-27	-12	12	15
volume name flawed	-6		-21	35
volume named before material	-17		25
volume named before part	24
volume named before surface	-16			22
volume named here finish	-44			7
volume named here material	-45	8
volume named here word	-23	21	10	-6
volume need owed behind		10
volume null copula behind	-22	8	9
volume null none no	-4		6
volume other copula behind	-7	-9	18
volume other imperative behind	-5	28
volume other past behind		-10	10
volume other present behind	-35		7	13
volume pointing	-6	31	-5	-21
volume right #	-49			8
volume right Q	-31	18	8	-14
volume right and	-12	42
volume right in		-16		17
volume right leave			14
volume right of	-9	34		-12
volume right on	-27		28
volume say imperative behind	-24	19
volume says copula behind	-21		19
volume says imperative behind	-30	39
volume says modal behind	-50	30	-7		12
volume says none no	-4		6
volume says owed behind		24
volume says past before	-51		19	16
volume says past behind				10
volume says present behind			8
volume sold so false	-14
volume sold so true	-23		25
volume then move pp			12
volume then undefined will			-16	8
volume use past behind				29
volume verb be behind	-7	-9	18
volume verb buy behind	-14	26
volume verb figure behind		6
volume verb get behind	-21		10
volume verb go behind	-10			22
volume verb have behind	-9		33
volume verb leave before	-8		37
volume verb need behind		13
volume verb null behind	-22	8	9
volume verb null no	-4		6
volume verb take behind		-7
volume verb use behind				31
volume whole clause	-27			14
volume work past behind	-10			18
weight after need sentence	-5	22		-8
weight after used sentence	-10	-9		25
weight beside hold	9
weight beside measure i other	9
weight beside nothing	-11	8
weight cue have	-28	-18	26	5
weight cue need	-39	40
weight cue used	-5			20
weight left #	-36	15		21
weight left at	20
weight left hold	9
weight name flawed	-18			16
weight named before material				7
weight named before word	-11	7		5
weight named here material	-42	23		15
weight named here word	-22	9	11
weight null copula behind	18
weight right #	-19
weight says copula behind	28
weight says imperative behind	-36	38
weight says past before	-12	-13		28
weight says past behind	-11	-6		28
weight says present behind	-4		18	-7
weight sized	-27	29
weight sold so false	-7			7
weight verb get behind	-17	17		-6
weight verb null behind	18
weight whole clause	-6	6
who nobody owed		16
who nobody present	-6		47
who thing imperative		11
whole false		-6	24
whole true	-10
`;
