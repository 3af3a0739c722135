/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after &		8
after +	-9
after /	-7
after 1	-16		19
after 22	-10		19
after =	13
after above	20
after acclimate	-10		18
after account			5
after actually	19	-6
after add	-4			15
after air	25
after allen	6
after anybody		-14
after anybody's		8
after anyhow	5
after around				6
after arriba	14
after arrive			6
after attic	8
after backsplash	-10			16
after backwards	6
after balance	14
after basement			4
after bathroom				16
after beat	4			-12
after belly	8
after bench		-6	8
after bled	5
after board	21	-10
after bore	-6
after bought far imperative		12
after bought far modal	13
after bought here		-11			29
after bought here past					19
after bought here run-on	12
after bought here start	-11	-25	-7	-21	36
after bought sentence					5
after bought sentence and	-10	-7
after bought sentence comma	-7	-8		-11	24
after bought sentence none	-8	-14	14	-16	22
after bought sentence past	-18			17
after bow	22
after bowl	15
after brass	19	-4
after break	6
after bridge	6
after bring		8
after brown		7
after brush	-16	21
after bury	18
after bust	6
after butt	-7			14
after buy	-34	19
after buzz	23
after c			7
after came off	-15		25
after carton	-18	6	12
after case	-23		15
after cellar		-12	10
after center	11
after chair				8
after change				12
after channel	6
after chatter	22
after chirping	18
after clamp	-22	20
after closet	11
after coat	6
after column	14
after core				4
after counter		-18				5
after crook	21
after cross threaded	7
after crosses		5
after crown	5
after crush	8
after ctr	20
after daylight	10
after deck	18
after deep	7
after den	17
after dig		7
after dont		10
after doorway	10
after double		9
after drags	5
after dresser	10
after drywall	17
after duct	13
after each				14
after early		9
after else	-6	24		-7
after enough	24	-11
after entry	13
after ever	12
after everything	9
after extra	-32		15
after face	21
after factory	-16	22
after far	-8			20
after feel	7
after feet		11
after fell	-19	10
after fell off	-4	11
after figure	17
after fireplace				15
after first coat	-8			16
after fit				5
after floors	5
after foot	9
after fourth	7
after fronts	4
after frost				11
after garage			19
after gears		4
after give	-5			12
after god	8
after good	5
after green	-7			14
after grout	25	-14
after hair	5
after hall closet	10
after hallway	11
after hand			11
after happen	-9	25		-6
after hasn't		10	-7
after have far owed		13
after have here comma	12
after have here past	15
after have here word	16
after have sentence comma		6
after have sentence imperative		20
after have sentence modal	-28	41
after have sentence none	-13	17	15	-19
after have sentence owed		10
after have sentence past	16
after have sentence word		31
after haven't	-24	14
after he's	5
after heat	9
after here			18
after hole	5
after holes	6
after hollow	25
after home	-29	19	21
after hook	7
after hot				14
after how				10
after hub				13
after i'd	14
after inch	-10			13
after inspector	-12	18
after install	-6			18
after job	-12
after kicks out				5
after kid			10
after kind		10
after kink	-12			20
after lab	-15	24
after lacquer		12		-11
after lane	16
after latex	14
after laundry	20
after leak	5
after lean	-14	8
after leaning			17
after least	15
after length	8
after let go	15
after lid	-28	32
after list		13		-15
after lite			13
after little					13
after live	7
after lol	6
after lot			8
after lunch	8
after man	-4	13
after mark	14
after mask	25
after mat	5
after mate		17		-7
after mind	25		-5
after mine	-8	23
after minimum	24	-17
after miter	6
after mount				12
after mud	12
after mush	-6			15
after ne	16
after need far and	11
after need far word	17
after need here comma		17
after need here modal		21
after need here none	-5	33
after need here present		8
after need here start	-12	25
after need here stop		14
after need sentence and		12
after need sentence comma		57
after need sentence imperative	13
after need sentence none		82
after need sentence owed	7
after need sentence word	8
after needle	14
after neighbor		7
after nice	-15	11
after nobody	19
after none far run-on	6
after none sentence stop					5
after north side	11
after nothing	9
after number	19
after nursery	24
after office	-26			9
after ones	-36	35
after or	14
after order	-15				41
after oughta	7
after owner		8
after painted shut	14
after pairs	7
after pantry			6
after paper		5
after parking lot	11
after past	4
after patch				11
after peel		12
after pick	-19	28
after pile				14
after pin	10
after pine	-6			9
after pitch				6
after plate		-6		5
after please	-5	23
after plenty	-29	22	5
after plumb	-10			25
after popcorn	-18	-8	29	-5
after powder room	-10		13
after promise	-4	11
after push	4
after putty				9
after r	15
after rain	9
after rains	-11	17
after re	6
after reach					17
after real	-8		26
after red	-18		13
after rental	9
after replace				14
after require	15
after rest	-9
after returned far none			7
after returned far owed	-10	17
after returned far past					14
after returned far present	-8		17
after returned here	9
after returned here and	4
after returned here copula	9
after returned here past	6
after returned here start	5
after returned sentence	-22				28
after returned sentence and	-33			-6	29
after returned sentence past	-36	-18		-19	43
after returned sentence run-on		6
after roll			12
after rough opening's	-14					8
after round	11
after run's	6
after sand	19
after saw	6
after scrape	9
after scratch	12
after screen	13
after second	-4			22
after see	6
after seize	10
after she	-6			7
after shed	-38	8	15
after sheet	-12			8
after shim		10
after short		8
after shot	20
after should	-5
after signal's				6
after site	-11		29	-13
after skip	7
after slab		5
after small	9
after smell	5
after snap		17
after some		8
after sort	5
after sound	12
after spare	-36		34
after spins	8
after spray	7
after squeak	5
after stack				6
after stand				8
after start	9
after station	-10
after steps	10
after stock	-22		11
after store		-16			8	10
after street	10
after study	-8		16
after stuff		19
after sub	-21			28
after sweat		8
after tacky	-10		18
after tag		10
after talk				7
after tap	16
after tell				14
after than	7
after the kid				5
after the kids	16
after the lady	-8				8
after the yard		-8				13
after they're	9
after they've	13
after tile guy		12
after tin	-14		13	-11
after toast	4
after too deep	-10	18
after too high	25	-13
after too short	18
after touch	8
after trailer	-23	-32	32
after trim	-34	32
after tubes	5
after use				16
after used far owed		5
after used here comma				27
after used here modal		-8		13
after used here none	-26	-18		49
after used here stop				7
after used sentence comma				10
after used sentence none				36
after van	-37		53
after vent	4
after wait	17
after weight			14
after wet	14
after whistling				17
after white		21
after width	-7					4
after winter	9
after won't	7
after would	-9	17
after wrap	-7	9
after wrong						14
after yet		14
again bought	-20	-12	16
again have		8
again need	31	-32
again used			27
ahead &	-28	20		4
ahead '	13
ahead (	-6
ahead +	-14
ahead 3				4
ahead @	9
ahead acclimatising	14
ahead across		7
ahead air	4
ahead alarm	5
ahead am			12
ahead anchor	-7		17
ahead any	-5	13
ahead anybody	6
ahead arrive	-5	8
ahead attic's	5
ahead away	11
ahead baby	5
ahead backsplash		13
ahead ball	15
ahead bath	5
ahead bathroom	17
ahead bed	25
ahead bend	5
ahead between	18
ahead bin		20
ahead bled	19
ahead board	-14	22
ahead boards	9
ahead bolt				6
ahead bond		16
ahead book			12
ahead both	13
ahead bottom	9
ahead break		12
ahead bring		13
ahead build	14
ahead burn				23
ahead button				15
ahead cap	-8			11
ahead care	17
ahead chalk	4
ahead change				5
ahead chrome	-19	27
ahead chuck		9
ahead client	28	-9
ahead close	4
ahead code	20	-10
ahead cold	12
ahead cold side's	17
ahead confirmats	-14	27		-6
ahead contact	-13		14	-8
ahead could				-6
ahead crawl				13
ahead crete	15
ahead crown					9
ahead crush	12
ahead cure				9
ahead dad	7
ahead damp	16
ahead date				-8
ahead den		10
ahead dial	22			-5
ahead didn't		7
ahead ding	10
ahead dip		8
ahead dog	5
ahead drop	4
ahead each	17	-11
ahead early				10
ahead eat				26
ahead eggshell	11
ahead either	14
ahead em	6
ahead empty	5
ahead enough			24
ahead ensuite	6
ahead entry	18
ahead even				14
ahead everything				10
ahead exhaust	10
ahead extra		-19				14
ahead falta		10
ahead feed	10
ahead fell		18		-10
ahead fence	-11			22
ahead fifth	19
ahead figure		23
ahead finally	16
ahead first	-9		8
ahead fish	5
ahead flash	4
ahead flat		10
ahead foam				17
ahead foil	-14		21
ahead footings	11
ahead forget		5
ahead fre			17
ahead front room	10
ahead fronts	12
ahead gable	21
ahead gal	-16					22
ahead garbage	7
ahead gonna		8
ahead green	-9	11
ahead guess	-13	22
ahead guest room	4
ahead guy	5
ahead half	-27	11	17
ahead hall	5
ahead hard		-7		11
ahead haven't		15
ahead height	17
ahead height's	18
ahead here			14
ahead him	-5		7
ahead home	5
ahead hub	6
ahead i'd		25
ahead i've			12
ahead inch	-21	25
ahead inside	9
ahead install				12
ahead instead	15			-9
ahead it'll	-7		8
ahead itself	20
ahead jacket	7
ahead job		-8		23
ahead joker	28			-17
ahead knees	4
ahead knock	4
ahead ladder				5
ahead lady	8
ahead laser	18	-9
ahead latch	10
ahead laundry	12
ahead lead	13
ahead lean	7
ahead let go	23
ahead library				11
ahead lid	-6			9
ahead lift	5
ahead linen closet	-12			10
ahead little	15
ahead living room	13
ahead loop	10
ahead luis	25
ahead machine	13
ahead mate	-30	33
ahead maybe	-6		27
ahead me		7
ahead middle		10
ahead mix				6
ahead moisture	14
ahead moisture's	15
ahead mount				14
ahead nail holes				7
ahead need		15
ahead next	21
ahead nick	14
ahead nowhere		5
ahead number	7
ahead nursery		-8		16
ahead okafor's				4
ahead one's	19
ahead ones	22
ahead opened up	11
ahead or			9
ahead order		17
ahead out of plumb	14
ahead outside	10
ahead outta	14
ahead own	12
ahead paper	-14	19
ahead part	18
ahead patio	14
ahead peel	9
ahead pile			15
ahead pitch	4
ahead plan	10
ahead plumb	9
ahead plus	-18	9	10
ahead push	7
ahead qt	-44	45
ahead quick	15
ahead quote	5
ahead r	-5	19
ahead rain						8
ahead rate	11
ahead read	8
ahead rebuild	-12			21
ahead rehang				8
ahead relay				8
ahead remind	4
ahead replace				13
ahead reset	7
ahead rest	-26		18
ahead return	-15					29
ahead ridge	14
ahead rod		9
ahead roof	4
ahead rotten		8
ahead round	11
ahead row	13
ahead run's	20
ahead s	6
ahead scrape	7
ahead screed	7
ahead screwdriver	18
ahead scuff	6
ahead seat	5
ahead send	-4					14
ahead sewing room	-9			16
ahead shed				6
ahead sheet	10
ahead ship	7			-4
ahead shoot			12
ahead short	-4	42
ahead shot	11
ahead shove	-5		20	-11
ahead shy	-29	34
ahead sign			6
ahead slab	15
ahead slab's	5
ahead slope	9
ahead snake	8
ahead snap	5
ahead snug	16
ahead solid				5
ahead sound	24
ahead spare	-17		19
ahead splash	20
ahead splice	8
ahead spray	5
ahead stack	-12	-12		16
ahead stagger	-7			15
ahead stain	9
ahead stairs	-10			18
ahead staple		6		-10
ahead steam				11
ahead steps	18
ahead store	-24		-8	-25	30
ahead street	5	-6			4
ahead strike	-11	22
ahead stuff	-17	18
ahead super	10
ahead supplier	-11		6
ahead supply		7
ahead sweep	22	-13
ahead sweet	6
ahead swing		13
ahead tag				6
ahead tall	12
ahead tank's	8
ahead temp	9
ahead they're	5
ahead third				5
ahead through				7
ahead tile guy		9
ahead time	-18
ahead trip	16
ahead tube	-10			17
ahead use				15
ahead van	-19	-7	31	-11
ahead wacker	5
ahead walk					13
ahead wall's	6
ahead walls	20
ahead wash	9
ahead wax		15
ahead we'd	-18	25
ahead we'll	-7	23
ahead weigh	-16			15
ahead weld		-6	17
ahead were	28
ahead what's	-5		8
ahead who	13
ahead whoever	5
ahead will		10
ahead within	12
ahead without	-19	13	5
ahead wrong	6
ahead wrote	9
ahead x		6
ahead you're		15
ahead zip	5
any	249	-98	-170	-100	-317	-342
area beside nothing				24
area cue need	-24	29
area cue used	-7			9
area flawed	14
area left #	-27			44
area left about	31
area name flawed	-5			19
area named before word	-6			21
area null none no				15
area right #	-17			18
area says none no				15
area says past before			-7	14
area says past behind				9
area verb null no				15
area whole clause	-34			42
bare beside add	6
bare beside bag	-7			15
bare beside bolt				9
bare beside bring		6
bare beside buy	29	-13
bare beside buy b other	19
bare beside cap	-9			15
bare beside clip	8
bare beside eat	9
bare beside forget	10
bare beside grab	23	-13
bare beside guess	12
bare beside have b nobody	17
bare beside lay	12
bare beside measure b other		6
bare beside measure bpp person				12
bare beside move i nobody	4
bare beside move p person	8
bare beside need b other	9	-4
bare beside order		14
bare beside plug				9
bare beside return	-24		5			20
bare beside say s person	6
bare beside scratch			7
bare beside screw	9
bare beside scribe		6
bare beside stack	17
bare beside stop		4
bare beside supply	-9	15
bare beside swap	5
bare beside throw	17
bare beside use	12
bare beside use pp nobody	8
bare beside use pp person	6
bare beside work p nobody	9
bare buy imperative behind		8
bare buy owed before	-19	25
bare buy past behind	36	-12
bare left &	-13	11
bare left (		-6
bare left -	4
bare left all	9
bare left already	16
bare left break	9
bare left buy	26	-14
bare left lay	19
bare left miss	6
bare left only	8
bare left or	5
bare left order		15
bare left right	-10	17
bare left screw	9
bare left send	10
bare left sit		11
bare left stick	8
bare left take						15
bare left that	8
bare left through	18
bare left time	7
bare left use	27			-21
bare list need		6
bare measure modal behind	-9	18
bare need modal before	7
bare need past before		12
bare need present behind	20
bare right &	-20	29
bare right (	5
bare right already			6
bare right arrive	4
bare right box	5
bare right bring	5
bare right can	5
bare right change	11
bare right fix	-10			15
bare right glue	34			-15
bare right hasn't	-9	14
bare right here			13
bare right inside	-11	16
bare right my	4
bare right never				6
bare right order	20
bare right pack	-9	16
bare right peel	-9	17
bare right replace	19
bare right roll	-14		19
bare right snap	13
bare right stuff	6
bare right there		5
bare right they	4
bare right use	16			-6
bare then buy b	-7				39
bare then buy pp	21
bare then use pp	16			-6
bare use past before	11
bare use present behind	17			-5
bare verb add behind	5
bare verb arrive before	6
bare verb box behind	8
bare verb bring behind		8
bare verb can behind	9
bare verb cap behind	11
bare verb crack before	-12	6
bare verb dry before	-5		14
bare verb fix before	-5			12
bare verb forget behind	7
bare verb glue before	20
bare verb glue behind	7
bare verb guess behind	13
bare verb lay before	10
bare verb lay behind	18
bare verb level behind				5
bare verb miss behind	8
bare verb order behind		13
bare verb pour behind		5
bare verb remind behind	4
bare verb replace before				7
bare verb screw before				10
bare verb screw behind	10
bare verb send before	5
bare verb show before	-7		11
bare verb silicone before	8
bare verb silicone behind	6
bare verb sister behind	-11			20
bare verb snap before	12
bare verb stand before	4
bare verb stop behind	4
bare verb take behind						9
bare verb throw behind	9
bare verb use before	12
beside add Q	-20			21
beside are Q	8
beside are all			11
beside are on	-14			27
beside arrive	-5	8
beside arrive pp other	-11	13
beside bag b other	-13			17
beside be G	5
beside be a	-9		7
beside be b person		10
beside be back	-12	23
beside bend	8
beside blow Q				9
beside blow p person				6
beside bolt	-19			30
beside bolt pp other	-19			27
beside box b nobody	-13	18
beside box in	-11		20
beside break	-6	14
beside break p other		8
beside break the	5
beside bring		14
beside bring Q	-12	28
beside bring a		5
beside bring b nobody		21
beside bring b other	-8	26
beside bring i other	17
beside bring me	-24	34
beside burn	-12			37
beside burn Q	-21	-6		31
beside burn pp person	-22			37
beside burn through	-12			24
beside buy G	9
beside buy Q	-9	14
beside buy a	-22			-8	15	12
beside buy b nobody		33
beside buy b person		15
beside buy i person	-14	22
beside buy pp nobody	-34	-40		-19	68
beside buy pp person	-34	-31		-7	51
beside call b other	11
beside call for	15
beside call him	19
beside call i person	11
beside call s other	13
beside can will other				11
beside cap	-26			30
beside change				11
beside change Q				4
beside change b nobody		7
beside change b person	-11			20
beside change pp other			9
beside change the	-12			29
beside chip pp other	11
beside clean it				7
beside clean pp person	7
beside clip s other				6
beside close	4
beside close b person	10
beside come T		-12			17
beside come bp person	4
beside come i person	7
beside come out					5
beside come p nobody		-14			20
beside come s other					10
beside come the					7
beside come up	18
beside count	15
beside cover	13
beside crush	12
beside crush pp other	12
beside cut a				10
beside cut in				12
beside dig	6
beside dig Q	9
beside dig pp other	7
beside ding	10
beside ding pp person	9
beside ding the	9
beside do Q				15
beside do a		10
beside do b other					5
beside do it	-9			5
beside do p nobody				12
beside doubl	15
beside doubl pp other	15
beside drill	8
beside drill Q	13
beside drip on	9
beside drive				17
beside drive Q	-4			20
beside drive p person	-4			20
beside dump i other				10
beside eat		-4		27
beside eat Q	-36	-28	-7	49
beside eat i other	4
beside eat my	5
beside eat p other	-18	-22		45
beside feed	12
beside feel b person	5
beside figure		31
beside figure Q	-8	34
beside figure b nobody	-23	32
beside fill				14
beside fill pp other	-11			24
beside fill the	9
beside fill with	-9			23
beside find a	7
beside finish to	4
beside fish	5
beside fit Q				5
beside fix	-7	8
beside flash	13
beside flip			6
beside flush	20
beside forget		12
beside frame	4
beside frame pp other	5
beside get Q			17
beside get about		-6	17
beside get b nobody		46
beside get b other		15
beside get i other	-8	15
beside get maybe	-16		25
beside get me	-11	26
beside get no	-10	15
beside get p nobody	-7	-15	42
beside get p person			27
beside get s person	-6	15
beside get that	15
beside give me	-4				12
beside give p person		-5			16
beside glue				4
beside glue pp person	-8			17
beside go Q	-4	-8		29
beside go b other	7
beside go down	9
beside go i other	11
beside go off	17
beside go on		7
beside go p nobody				33
beside go p other				7
beside go p person				15
beside go through	-19			55
beside grab		8
beside grab Q	-15	5			20
beside grab a	-5	18
beside grab b nobody		10
beside guess	-6	12
beside hang Q	-10			26
beside hang b other		6
beside hang by	16
beside hang on	-14	7
beside hang pp nobody	-7			14
beside hang pp person	-15			27
beside hang s other	6
beside has Q	10
beside have Q			31
beside have b nobody			42
beside have b person			50
beside have pp nobody	12
beside hold Q	9
beside install	-5			14
beside is already	4
beside is in	6
beside is on	5
beside knock	7
beside knock pp person	9
beside know b other			6
beside lay				7
beside lay i other	17
beside lay in		10		-9
beside lay pp person	-9			20
beside lay the	13
beside leave G	9
beside leave Q	-18	-6	51	-9
beside leave me	-19		25	-19
beside leave on	12
beside leave over	20
beside leave pp nobody			9
beside leave s other	-16		23	-7
beside lift	6
beside like b person	5
beside make Q	20	-5
beside make b nobody		6
beside make it	-15	21
beside make pp person	21
beside mark	5
beside measure b nobody		5
beside measure bp person	4
beside measure p nobody		-14			20
beside meet	5
beside miss Q	-6	26
beside miss a	17
beside miss i person		9
beside mix	-10			17
beside mix Q	-10	-9		26
beside mount	-5			16
beside mount pp other	9
beside move Q	15
beside move b other	6
beside move i other	9
beside move i person	-13		27
beside move p nobody				33
beside move p other				7
beside move p person				15
beside move pp nobody			5
beside nail				14
beside need		19
beside need G		5
beside need N		10
beside need Q		16
beside need a	-6	24
beside need an	-18	22
beside need b nobody		33
beside need b other		14
beside need b person		19
beside need more		18
beside need pp person	18
beside need s nobody		6
beside need the			16
beside need to	11
beside nick	15
beside nick pp other	16
beside nick pp person	7
beside nick the	8
beside open b person				6
beside open the	6
beside order		15
beside order G		-11			16
beside order N		9
beside order Q	-5	25
beside order a					6
beside order b nobody		15
beside order b person	-6	12
beside order i person	-27	29
beside order pp nobody	-12	-16			34
beside order pp person		-10			17
beside order the	-6	14
beside other b nobody		27
beside other i nobody	-6	17
beside other p nobody			21
beside other p person			6
beside other pp nobody	-45	-21		-20	46	16
beside other s nobody	19
beside owe	-9	11			5
beside owe b person	-7				11
beside own	12
beside pack b nobody	-12	18
beside pack it	-6	13
beside patch b nobody	-7	14
beside peel	11
beside pick					9
beside pick b nobody		20
beside pick i person	11
beside pick pp nobody	-26	-23		-11	44
beside pick pp person		-12		-7	25
beside pick up	-6				30
beside place	-6			12
beside plumb	9
beside point Q	6
beside pour Q				17
beside pull Q	-9			19
beside pull out	8
beside pull pp nobody	15
beside put				11
beside put G	-20			11
beside put Q				20
beside put a	-4			5
beside put bpp nobody	-5			26
beside put bpp person				13
beside put i person		22		-8
beside put in	-13			30
beside put it	-46			36
beside put new	-25	-5		36
beside put on	-32			37
beside quote	5
beside rate	7
beside rate Q	7
beside read	5
beside read Q	5
beside read bpp other	6
beside read i other	11
beside rebuild	-12			21
beside relay				10
beside relay Q	-10			18
beside relay pp other	23
beside replace				15
beside replace Q				9
beside replace pp nobody	-24			35
beside replace pp person				9
beside replace the				10
beside return	-18			-5		31
beside return Q		-16	-17	-13		25
beside return b nobody		18	-12			-13
beside rip b other	13
beside rip b person	-8		6
beside rod	14
beside rod pp nobody	10
beside roll b person	5
beside run Q	-11			38
beside run bp nobody	-4	12
beside run bp person	-13	10
beside run i other	14
beside run it	8
beside run out	8
beside run p nobody				22
beside run p other	18			-5
beside run p person				6
beside run the	7
beside say i person		5
beside say pp other	6
beside say pp person	7
beside say s person	-6	19
beside scrape	5
beside screw				20
beside screw Q		-5
beside screw pp nobody	-20			28
beside scribe		8
beside send	-19					21
beside send Q	-42	14				20
beside send b person	6
beside send pp other	-10		4			7
beside send pp person	-10					15
beside send the	4
beside set Q				13
beside set a				12
beside set bpp nobody	21
beside set bpp person				6
beside set it				13
beside shim	15
beside shim pp person	18
beside ship				-6
beside shut	6
beside sign	-11		18
beside sign pp person	5
beside sister Q	8			-6
beside sister a	-21			28
beside sister pp person	-6			20
beside sit b other		10
beside sit flat	-23	29
beside sit on	5
beside skim pp nobody	7
beside snake	11
beside snap	6
beside snug	16
beside split bpp other	7
beside stack	-13			23
beside stick a	-17			22
beside stick pp person				7
beside stop		13
beside stop b other	-15	18
beside strip b other			16
beside stuff	-17	18
beside stuff b nobody	-6
beside supply		10
beside swap	-5			14
beside swap b nobody		9
beside swap pp other	-23			31
beside swap pp person	-17			34
beside swap that	11
beside swing		15
beside swing b person	-8	21		-5
beside swing by	-11	23		-9
beside take Q	-9			24
beside take a	21
beside take b nobody	7	-6
beside take b other	-4	17
beside take me		-10		10
beside take out	32			-14
beside take p nobody	-22			-20		38
beside take p other				29
beside take p person	-16					25
beside take the						27
beside think b person			10
beside throw a	-27	19
beside throw b nobody		13
beside throw p person	-8			26
beside tie pp person				13
beside tighten	19
beside tighten the	15
beside tile	10
beside top G	22			-12
beside trip	19
beside try			4
beside try b nobody	-11		16
beside try pp person	16
beside turn b nobody	11
beside turn b other	-10			17
beside use				23
beside use Q				24
beside use a	-15			24
beside use about				14
beside use b person	-9
beside use pp nobody				22
beside use pp other				26
beside use pp person				30
beside use up	-28			36
beside walk					14
beside want Q		14
beside want a		4
beside want b nobody	10
beside want b other	6
beside want b person		25
beside want it	18	-10
beside want pp person	18
beside want the	16
beside want water	15
beside wash	9
beside weigh	-16			15
beside were	24
beside were is other	24
beside work	9
beside work bp nobody	-4	12
beside work bp person	-13	10
beside work bpp nobody				5
beside work p nobody				18
beside work p other	11
beside work p person				6
beside work s nobody	11
beside wrap pp other			13
beside wrap with			14
beside zip	5
bound about			9
bound over	14
code	-48			33
count after bought far	-5					5
count after bought here	10
count after bought sentence	-40	-11	26	10	10
count after have here	-13		15
count after have sentence	-9	34
count after need here	-12	41
count after need sentence	-19	46
count after returned far	-10
count after returned sentence	-43			-14	36
count after used far	-10
count after used here				21
count after used sentence	-27
count beside are	-31			39
count beside be	5
count beside blow	13
count beside box	-4		19
count beside bring	-19	17
count beside buy	-14	18
count beside buy pp nobody	-39				40
count beside call	28
count beside change	-33	-9		36
count beside come	-15
count beside get	-8
count beside give	-9				18
count beside go				11
count beside grab					5
count beside hang	-33			37
count beside has			-11	7
count beside have			29
count beside have b nobody	-30		47
count beside have b person	-14		41
count beside have pp other	29		-17
count beside have pp person	-20			27
count beside hold	-11					9
count beside leave	-31	-13	50	-22
count beside make	-11	18
count beside measure p other	-29		16	15
count beside miss		26
count beside mount	-18			23
count beside move	-7	-7	19
count beside move b other	21
count beside move p other				16
count beside move pp other	-28	13	24	-21
count beside move s other	-41	9	26
count beside nail				6
count beside need	-8	33
count beside need b nobody		24
count beside need b other	-15	27
count beside need b person	-13	42
count beside need s other	8
count beside nothing	-5
count beside other b nobody	-18	54
count beside other b person		26
count beside other i person		12
count beside other p nobody	-27	-14	35	-14		17
count beside other pp nobody	-48	-5	-8	-22	28	30
count beside other pp other	4
count beside other pp person	-16	-18		-4	8	28
count beside pick	-13	15		-6	12
count beside point	9
count beside pull	28			-12
count beside put	-24			47
count beside rate	7
count beside read	16
count beside replace	-14			26
count beside return	8	-7	-8			9
count beside roll	9
count beside run	-8			18
count beside say b other	30
count beside say pp person	20
count beside send	-56			-11		41
count beside set				8
count beside sister		6		-16
count beside stick	-11	4
count beside swap	-32	6		25
count beside take	-21	-15		13		30
count beside throw	-17	8		7
count beside top	10
count beside turn	19
count beside undefined has other			-11	7
count beside use				22
count beside use pp nobody				20
count beside use pp person	-16			30
count beside work b nobody	-10	22
count beside work b person	-13
count beside work bpp nobody	-14			26
count beside work bpp person				23
count beside work p nobody	-7			20
count beside work pp nobody	-24			54
count beside work pp person				28
count beside work s other	7
count buy past behind	-27	-17		-4	51
count cue back	-11					41
count cue bought	-29		-5		43
count cue have	-11		71
count cue need	-6	46
count cue used	-16			32
count flawed	5
count have present behind	-16		31
count kept	-24		55
count left #	-33			10
count left (	-29	5		14
count left +	-41	5		22
count left N	28
count left Q	-4		5
count left T	-9	6	9	-5
count left about			17
count left add	-5	7
count left all				32
count left and	-34	26
count left are	19
count left at	35
count left back	-12	-12		-24		32
count left be	20
count left bed	14
count left between	18
count left bring		13
count left buy	-43	38
count left by		8		-11
count left change				13
count left cut	-15	16
count left down	-27			35
count left drive	-15	-6		28
count left get	-18		14
count left go		-6		6
count left grab					15
count left hang	-28			37
count left has		10
count left have			21
count left is	9
count left last	10
count left leave	-21	-7	32	-17
count left maybe		-18	32	-5
count left me	-22	18
count left miss	-6	27
count left need	-8	34
count left now	-6			15
count left of	13
count left on				24
count left only	-5	-6	29	-7
count left order	-41	39
count left other	8
count left out				7
count left over	17
count left past	12
count left point	9
count left pull	9	-18		-19		18
count left put				11
count left rate	7
count left read	16
count left replace				9
count left return		-7	-11			11
count left say	12
count left set				10
count left short	-43	54
count left take	-45	-6	-12	41		14
count left that's	-30	4		15
count left then	23
count left there's	-28		39
count left those	14	-13
count left through				8
count left throw	-17	8		7
count left to			17
count left under	12
count left up	-57	6		13	13
count left use	-28			35
count left with	-41			28
count list need	-35	50		-29
count measure past behind	-6				20
count measure present before		10		-10
count measure present behind	12
count more	-20	28
count move imperative behind	18
count move past before	-11		48
count move past behind	-15		7
count name flawed	-20
count named before area	10
count named here area	-20	16		4
count named here defect		-4
count named here finish		21
count named here material	-66			28
count named here part	-96	9		13
count named here surface	22
count named here tool	-32	38
count named here word	-39
count nameless	19
count need modal behind	-37	30
count need owed before		13		-7
count need owed behind		20
count need present behind	-19	37
count not ahead		32
count null modal behind	-7	22
count null none no	-13
count other copula before				4
count other imperative behind	-31	69
count other modal before	7			-7
count other modal behind	6
count other owed behind	-12	13
count other past before						8
count other past behind	-17	-8				7
count other present before	25
count other present behind	-7	31
count pointing	-39			25
count right (		18
count right +	-8			8
count right @	-31	22		10
count right Q		4
count right a	-8	6
count right above	12
count right already		-10	12	-15
count right and	-15
count right are	-21			31
count right be	11
count right box	-15					17
count right by				-5
count right can	-52	19	10
count right come	9			-21
count right don't				6
count right down	-18			16
count right each	-21			32
count right for	-34	11
count right from	-9		7
count right get	9			-4
count right go				10
count right has	34			-8
count right in	-30	-4	27	13
count right it			17
count right leave	-15		57
count right miss	9			-22
count right more		16
count right need		18		-11
count right no	-15	29
count right now	22
count right of	-25	7		6
count right off	13
count right on				4
count right out	-29	-21	-16	45
count right over	-11		17
count right run	-6	14		-6
count right short	-9	37		-7
count right still			17
count right strip	-5		16
count right the	-8	16
count right through	-13	-9		27
count right to						22
count right up	-38			54
count right were	-9					20
count right when			6
count right which			10
count right with	22
count say imperative behind		-6		13
count say past behind	23
count say present behind	-7		7
count says imperative behind		31
count says imperative behind not		12
count says modal before	-9			6
count says modal before not		19		-6
count says modal behind		23
count says modal behind not	8		-9
count says none no	-14
count says owed before		10
count says owed behind		10
count says past behind	-5			6
count says past behind not	11		-26
count says present behind	-13
count says present behind not	-25	26
count sized	-54	32
count sold so true	-6
count then measure b	-18	-10	-17	32
count then measure p	-14					10
count then move b	8			-14
count then move p	-19	-11		33
count then move pp	-15		61
count then move s				9
count then need b				-5
count then need pp	-33	29		-13
count then other b		15
count then other i	21			-26
count then other s		12
count then undefined has	23
count then undefined is				8
count then undefined will	-27	16
count then work b	-5		13
count then work bpp				13
count then work i			17	-19
count then work pp				32
count then work s	-38	27
count use past behind				18
count verb add behind	-6
count verb bring behind	-22	15
count verb buy behind	-7	16
count verb call behind				7
count verb change behind	-49	-9		43
count verb come behind					17
count verb crack before	7
count verb cut behind	14
count verb do behind	19
count verb finish behind	25	-8
count verb get before		16		-13
count verb get behind	-18
count verb give behind	-6				16
count verb hang before	-43	-21		47
count verb hang behind	-29			38
count verb have behind	-14		28
count verb i'll behind	-17	29		-13
count verb lay behind	-43	-13	28	19
count verb leave before	-26		50
count verb leave behind			17
count verb make behind	-15	6		10
count verb miss behind	-30	33
count verb move behind	-8		9
count verb nail behind				6
count verb need before	-6	24		-10
count verb need behind	-6	39
count verb null no	-13
count verb pick behind	-19	22		-5	9
count verb pull behind	33			-14
count verb put behind				24
count verb replace behind	-10			23
count verb run behind	-24			21
count verb send behind	-20		-13	-13		39
count verb set behind				6
count verb shim behind	8
count verb should behind	-8			17
count verb sister behind		6		-16
count verb strap behind	-31		13	12
count verb strip before	7
count verb swap behind	-10			13
count verb take behind	-47	-21		7		37
count verb throw behind	-17	8		7
count verb use behind				11
count verb want behind		4
count whole clause	-35			27
count work modal before	-21	29		-13
count work owed behind	15
count work past before				41
count work past behind				40
count work present before	-28		5	7
count work present behind	-10			12
cue bought					45
first N	-17	20
first an	-28	26
first anchor		11		-7
first any	6
first anything				4
first black	5
first block	12
first brass	17
first caulk	9
first coffee	5
first cust	19
first drill	9
first drywall	8
first eggshell	-26					22
first epoxy				13
first flash	-7		17
first gray	-7	14
first mud	15
first new	-52			46
first oak	-7			14
first plate	-25			31
first plenty			9
first plug	10
first prime	8
first rear	4
first rh	7
first rigid	-7			15
first ring	4
first screen	6
first shim	-10	18
first silicone				8
first some	-5	9
first stainless	15
first staple	-9	8
first step	4
first temp	7
first vent	-5	15
first waste				4
first white	19
first wire	7
group eachOf		-23		22
group range	19
head 1	-31	9	11
head 2x4			10
head absent	27
head abt	7
head acrylic	-20	17
head adhesive	-16		12
head aff	7
head air	10
head amps	13
head anchor	-14			22
head anchors	-23		6
head anything	11
head apart		-11		18
head architraves	11
head away	10
head back						33
head baffles	15
head bags	-28	17	18	-11
head ball	6
head ball valve	-22	24
head balusters				6
head bar	-21	11		12
head basket	-18	11	5
head bath fan	5
head batt	5	-12
head batteries	-4			6
head batts	-5	8
head bead			7
head belt	-26	14		13
head belts	20			-7
head bench	9
head better	12
head bit	19
head blade	-10		9
head blinds				5
head blocking	5
head blocks	-20
head blue tape		10
head boards				17
head bolt	-22	-6		30
head bolts	-6
head bond		9
head bonding primer	-12	14
head boots	21		-6	-20
head boss	4
head bowls	-5			12
head boy	12
head bracket's			7
head brackets	-17			12
head brads	-6				14
head braided lines	-5		7
head brass	-5	16
head breaker				5
head breakers	-14					18
head brick	-23		14	10
head bricks				9
head brother	6
head bucket	-13			17
head built in	7
head bumpers	-13	13
head cabinet screws	-9
head cabinets		-14	18
head cable	-15			21
head can lights				8
head carcasses	5	-8
head card	22	-11
head carpet	20
head cartridge			5
head case	16
head cat6				12
head ceiling	8
head ceiling tile			12	-6
head center	21
head centres	18
head chairs		10		-10
head chimney's	18
head circuit	10
head clamps	-21	16
head clear	8
head closer	-6	8
head closet			5
head closet bolts		11
head coat	20
head coat hooks				6
head code	12
head coffee	-19	29		-5
head coil	26
head color	27
head condenser			-14	8
head conduit strap	10
head contact cement	-17	28
head copper				8
head cord		4
head corners	22
head countertop	14
head couplings	-13			12
head cove base	25
head cricket	13
head crown's	8
head damper's	20
head deck screws	-14	8		9
head deep	18
head dirt	19		-13
head discs	-42		15	25
head door sweep	-32	22	17	-11
head double		11
head downspout				9
head drain's	-9	15
head drill	4
head drip edge	14
head drop	16
head drywall's	-9
head dumpster	8
head edges	8
head eggshell	-24	27
head elastomeric				-4
head elbow	-23	35
head elbows	-33			19
head electrical	31
head em	10
head enamel	-26		22
head end caps	-16			4
head enough			9
head except	9
head expansion tank	-9	19
head face frames	10
head factory	4
head fan	20
head fascia	11
head faucet				10
head fault	22	-10
head fell		10
head filter	-16
head filters	-12			17
head fine	6
head finish nails		24		-8
head fire caulk		29	-8	-25
head first		5
head fixing	-12	5		10
head flame sensor	15
head flapper			-7	22
head flashing tape		-14		18
head flex	-5	7
head float switch	-6
head flow	6
head flue	6
head foam	-11			8
head folks	21
head four by four	-6	13		-6
head frames			7
head full	-15	22
head furnace			5
head furnace filter	-22		5
head gas	8
head gasket	-13
head gate	5
head gauge		7
head glass	5
head glass doors	-19			16
head glue's			9	-4
head good	14
head gravel's				12
head gray				5
head grease	-5					9
head grid	-5			12
head grille	4
head grout	8
head grout's			6
head guillotine	24
head gutter		-14		11
head gutters				11
head guy	11
head guy's		9
head hair	20
head hall	-21	-10		20		15
head handles			8
head handrail	17
head handrail brackets	8
head hang	7
head hanger				12
head hangers				-9
head hardware			13
head header	13
head heat mat's	12
head heater			8
head height's		11
head hidden clips	-8	-4			12
head high	25
head hinges					5
head hip	6
head hiya	12
head hole	12
head holes	8
head hooks				8
head hose bib	6
head hoses	-12			11
head hot mud	12
head insp	15
head instead					14
head insulation					6
head jack	18
head jacket	9
head joints	4
head joist	36		-9
head joist tape	-19			22
head keys	16
head kick	-10			18
head kit	-40	34
head kitchen				7
head kits	-47	16	31
head knife	-8	16
head knobs	-11		13
head lady	5
head lags	-11			5
head landing	5
head lead	5
head ledger	18
head left hand	-21	24
head leg	13
head lid	-17	13
head light switch	10	-13	8	-8
head lights	19
head line set	7
head lines	17
head lip	5
head list	6
head living room	9	-17
head lockbox	10
head locks			14	-11
head loop	9
head loose	15
head low	12
head lvl		12		-5
head machine	14
head maglock	19
head main	6
head manifold	22	-7
head marble	17
head mastic	-15			13
head maybe			9
head membrane				5
head mesh				5
head mind	6
head mini split	6
head mirror's		5
head mirrors				11
head mixer	-9		19
head mortar	-17	10
head mortar's	-11	-5	27	-6
head mud		21
head multi-finish	-22	13	14
head must	12
head nail plates	-30	6		15
head nipple	-18	26
head nm	-7		4
head nosing						18
head ofc	9
head only	7
head opener's	8
head opening's		4
head outlet	17
head outlets			17
head outside		15
head own	12
head p trap	-17		7
head pad	-12			17
head pan		11
head panels				4
head paper	6
head part	18
head patch	7
head pavers				7
head pendant	7	-6
head pex	-8			20
head photo eyes	18			-5
head photos	7
head pickets	-23			5		14
head picture	12
head pieces		6
head pins		14
head pipe's	24
head plank	6
head plate	-14			11
head plates	-27
head please	-44	58		-11
head plinths	-12			20
head plugs	-5			9
head poly	-12			9
head post	4
head posts				15
head precharge	10
head pressure	21
head primer	-15
head print	14
head purple board				5
head put	4
head putty	-10			27
head pvc	-32	7		26
head rafter	-8			16
head range		5
head range hood			7
head read	10
head rear	5
head receptacles	-16			14
head reducer	-8	17
head render			10	-6
head rental	19
head replacement	20	-11
head rh	7
head right	8	-12	10	-24
head rigid	-12			8
head rim	-13			22
head rim joist				5
head ring	-15	6
head rise	8
head risers	37	-26		-7
head rock	8
head rod					8
head rodding point	12
head rods	-14		7
head roller	-11	17
head roots	9
head rough in	8
head round	16
head row	9
head run	27
head salon	8
head sample	15
head sandpaper	16			-9
head sandwich	13
head satin			16	-9
head screen	4
head screwdriver	6
head screws	-5			11
head sealant	-35	30	5
head sealer	-9				5
head seam's	10
head seams	12
head self leveler	-35			39
head shelf pins	-19			26
head shelves		-14		17
head shims	-26	10
head shingles			9	-14
head shoe	-9	25
head shower walls	15			-5
head shutters				9
head sides	27
head sign	16			-5
head sinks	-22			17
head skim	21	-8
head skirting	-11
head skirting's	-8			8
head slabs		-16	17	-5
head slatwall		-14		16
head slider	5
head slider's	7
head slip		4
head slow	13
head smoke	7
head smoke alarm		10
head smoke detector				8
head sockets		-12		18
head sod	-6			12
head soffit	5
head soffit vents	22
head soffit's	5
head solid	9
head somewhere	7
head sorry	5
head speakers	-18		15
head spins	7
head spots	19			-7
head square	14
head stack	25	-13
head stain		-5	8
head stainless	7
head staple		10
head static	9
head still	15
head stock		-5	16
head stones		18
head stop	14
head store	5
head stove	6
head straight		7
head strainers	-27			15
head strap	-15			22
head street	-17
head string	13
head structural screws	-5
head stud	12
head subfloor	15
head supply line	-13				19
head switch	11
head tag	21
head tape	-7
head tee	-9
head template	10
head tester	-6	18
head the lady	-21	28
head thick	18
head third	9
head tip's		5
head toggle bolts	-7				20
head toggles	-19			27
head toilet seat				13
head towel	9			-9
head towel bar	-24	-13		-12	14	22
head trap arm	4
head tread	14
head trim's	8
head trunk	26
head tub		9
head tub drain	4
head tub's	26
head tubes	-20			18
head two by eight	-4			9
head upper				10
head upstairs	-13			23
head valves		12
head vent stack	8
head wait	12
head wall paper	4	-11		8
head wall tile	16	-18
head wall's	7
head wallpaper			16
head walls	12
head walnut	-6	17
head washers	-36	39
head water's		6
head wax	-17			13
head wax ring	-47		5	32
head wc	4
head whip				15
head windows				5
head winter	6
head wire's	-8	4	5
head wires	34			-12
head wood filler	-13	17
head wrong	-7	17
head x	-14
head yet	9
joined and none	-15
joined run-on none	10
kept			16
last cue bought other	-16	23
last cue bought same		5
last cue need same		17
last use buy imperative same	-11	44
last use buy modal same		9
last use buy owed same	13
last use buy past same					12
last use buy present other		15		-10
last use have imperative same		6
last use measure imperative same	-6		7
last use move modal other					9
last use move modal same	22
last use move present other			5
last use need modal same	-20	14	7
last use need owed same		12
last use other owed same		19
last use say owed same	4
last use say present other			5
last use see imperative other					9
last use see modal same	6
last use see owed same	16
last use use imperative other	-22					22
last use use past same	-22			30
last use use present other	8
last use use present same			9
last verb add same			6
last verb adjust same	13
last verb arrive same	-12	-8	34	-8
last verb bolt same	-17	-11		15	14
last verb box same	-6			14
last verb bring same		28
last verb buy same	-12	32
last verb buzz same				8
last verb call same	-7
last verb can't same	19
last verb caulk other	12
last verb clear other	5
last verb clear same	29
last verb clip same		-8		9
last verb crack same	-17	13
last verb cut other	7
last verb dial same	7
last verb dig same				16
last verb doesn't same	5	9		-21
last verb drain same	-7			16
last verb drop other	-7	6
last verb drop same	21
last verb feather same		15
last verb feed same	-11			18
last verb find other	-21		15		14
last verb fire same	-14	18
last verb fix same	-25			25
last verb flash other	6
last verb flip other	-11	18
last verb float same	-9	16
last verb flush same	8
last verb foam other	-10	10
last verb forget same	26	-18
last verb frame same	-22	11		7
last verb fre same	14
last verb give other			10
last verb glue same	-14
last verb grout same	-14			19
last verb hand same						10
last verb hang same	-12			31
last verb he'll same	7
last verb hose same	7
last verb hum same						15
last verb install other		10
last verb kick same	12
last verb know same			6
last verb land same	-17		17
last verb leak same	19
last verb look other	-8				13
last verb look same	7
last verb measure same	19
last verb meet same	5
last verb meter same	14
last verb mitre same	9
last verb mount other	21
last verb move other	-17	14
last verb move same	8
last verb nail same		7
last verb need same		29
last verb notch same	8
last verb order same		5
last verb own same	5
last verb pack same		-14
last verb paint same	19	-6
last verb pass other	8
last verb patch other	8
last verb pick same		9
last verb plane other			14	-8
last verb pop same	8			-18
last verb prime same			14	-11
last verb pull other	-9			20
last verb push same			-5
last verb rack other	26
last verb rate other		-7
last verb read other	-6	6
last verb redo same	-10	7	7
last verb refasten other	11
last verb reglue same	16
last verb rehang other	14
last verb replace other	-6	9
last verb rip same	17
last verb rock same	6
last verb scribe other	6
last verb send other			7
last verb send same	5
last verb short same	27	-12
last verb show same		11
last verb shut same	8
last verb sister same	10	-5
last verb size same		14
last verb slide same	17
last verb slit same			14
last verb smell same	14
last verb snug same		11
last verb splice other			7	-8
last verb spray same	17
last verb squeak same	-9	12
last verb start other	13
last verb start same				10
last verb stick other		8
last verb stretch same		-5
last verb strip other	-5			15
last verb stuff same				14
last verb sweat same		9		-8
last verb take other		7
last verb tear same	21
last verb tell other	-9		8
last verb test same	21
last verb think other	-6			9
last verb throw other		4
last verb tie same	6
last verb tile same	-9	14
last verb top same	18
last verb trace same				10
last verb trim other	-17	26
last verb trim same				5
last verb trip same		11
last verb try same	4
last verb turn same			5
last verb use same	-14			19
last verb vacuum same	14
last verb wait same		9
last verb wanna same	-11	-8			21
last verb want other			11
last verb wire same	18
last verb work same	5
last verb would same	4
last verb wrote same				11
last verb zip same	-29			7	6
left # Q	-7		17	-11
left # add	-6			11
left # all	-33			42
left # bring	-12	25
left # buy	-11	20
left # change	-30	12		18
left # do				12
left # every	12
left # figure	-32	36
left # from	-15		20
left # garage				5
left # get	-31	31
left # grab		10
left # have			37
left # in	8
left # it's		6
left # just	14
left # living room	13
left # miss		8
left # need		24
left # only	-5	-10	18
left # order	-13	21
left # other			5
left # replace	-25			30
left # return	-13	-14	-14	-11		38
left # screw	-13			17
left # short	-34	49
left # take				-12		24
left # that's	-14			11
left # the		-6	27
left # there's			8
left # throw	-21	35
left # use				32
left # we're		14
left # with	14
left &	-17	4		10
left (	-18	8
left +	-23			10
left -		8
left @	7
left G +	-21			7
left G G				8
left G Q		15
left G T	19
left G about	13
left G and	-22	14
left G are	8
left G for	5
left G get	5
left G have	19
left G is	12
left G need		10
left G of	18
left G take				14
left G the	27			-4
left G to	5
left G want	17
left N and	-13	18
left N with				9
left Q +	-11	22
left Q G	-17
left Q Q	16
left Q and		20
left Q in	15
left Q need	-11	21
left Q of	18
left Q off	7
left Q on	6
left Q over	17
left Q to	5
left Q where	7
left Q with				17
left T for		10
left T with		10
left a G	25	-15
left add	-10
left all				27
left all in	-9	-6		19
left already			7
left and		6
left and then	18
left are in				10
left around	5
left as	6
left b	12
left back						22
left back in			4
left back to	4
left back with		5
left bed	14
left between	8
left blow				10
left book say	8
left bottom of	8
left box	9
left break	-12	12
left bring		11
left bring me	-21	29
left burn through	-12			24
left buy	-12				5
left by Q	17
left by T	-7		20	-8
left call it		9
left can't get	10
left closet	-5		17
left coat	23	-11
left come in	15
left come out	7
left come up	20
left cut in				8
left down from	13
left down to			35	-5
left drill	10
left drip	5
left drip on	9
left drive	-15	-6		28
left eat		-8		17
left figure		28		-4
left fill	9
left fill with	-9			23
left fit				11
left flush	16
left foam	-6	-10		25
left forget	-11	18
left get			7
left get maybe	-10		14
left get me	-18	30
left give	8
left give me	-7				16
left go				11
left go on	11
left go through	-41			63
left gonna need	11	-6
left gonna want	-7	19
left gotta be	6
left grab	-14	13			10
left grab me	8
left half	-16		14
left hand			14	-7
left hang				5
left hang by	18
left hang on	-14	7
left he need	-17	22
left he want	21	-11
left he's get	-7		7
left hold	7
left i bring	13
left i cut				7
left i get	-24		42
left i hang	-17			26
left i have	-35		38
left i leave	-12		17
left i need		16
left i pull				12
left i put				27
left i run	-18			35
left i set	-9			23
left i sister				9
left i stick				10
left i swap	-24			33
left i take	-32	-6		19		19
left i think			7
left i use	-6			35
left i want		21
left i'd like		10
left i'll need	-8		18
left i'll want	-26	31
left i've get	-19		40
left in at	4
left in with		12
left inspector want	13
left instead of	16			-11
left it and		13
left it at	17
left it be	9
left it for	-19	11
left it in				7
left it run	13
left it take				17
left it to	18
left it up	9
left it with	-6			12
left it's get	-16	8		12
left laundry	7
left lay	-16			26
left leave on	10
left living room	10
left loose	13
left lose	10
left make	12
left maybe	-14		38
left me	-5	19
left miss		18
left mix				23
left more than	8
left mud and				7
left need		17
left need G	-6	13
left new	-42	35
left of the	34			-15
left on all				5
left one's	6
left only			23
left only get	-40		36
left open				4
left or	5
left order	-19	28
left other	7
left out with	-15				30
left outta	14
left over by	6
left past	7
left patch	15
left pick up	-19	4		-7	31
left plug	5
left point	8
left pour	-18			24
left put in	-18			27
left rate	10
left read	11
left replace				5
left return	-17	-10		-7		37
left right	-10	17
left sand	-17	10	5
left scrape	5
left screw				7
left scribe	9
left send	-5					9
left set				17
left short	-26	54
left short by	-4	14
left short on	7
left shy of		-6		15
left sit		7
left sit on	6
left stick	-6			17
left still	-15		25
left still have	-14		36
left still in	-7		22
left still need		13
left supply	15
left swap	-5			26
left take	-13			10
left that	9
left that with	-13			21
left that's	-12			9
left the lady want	-13	19
left the last	15
left the right	-10	17
left them					13
left there be	22
left there is			15
left there's			8
left they want					5
left thing	-11		20
left think			7
left those	14	-13
left those and		27
left through				33
left throw	-31	23
left tile	-14	19
left till	5
left to move	9
left to put	-25	17		8
left truck eat	7
left try			15
left under it		8
left up in	16
left up on	-11			22
left us	-13	25
left use				31
left use about	-19			29
left use up	-15			27
left wall	7
left we need		11
left we use	-7			28
left we're		14
left white and	-30	18	7
left with the	-9		16
left you	10
left1 &	-17	4		10
left1 (	-18	8
left1 +	-23			10
left1 -		8
left1 @	7
left1 add	-10
left1 all				27
left1 already			7
left1 and		6
left1 around	5
left1 as	6
left1 b	12
left1 back						22
left1 bed	14
left1 between	8
left1 blow				10
left1 box	9
left1 break	-12	12
left1 bring		11
left1 buy	-12				5
left1 closet	-5		17
left1 coat	23	-11
left1 drill	10
left1 drip	5
left1 drive	-15	-6		28
left1 eat		-8		17
left1 figure		28		-4
left1 fill	9
left1 fit				11
left1 flush	16
left1 foam	-6	-10		25
left1 forget	-11	18
left1 get			7
left1 give	8
left1 go				11
left1 grab	-14	13			10
left1 half	-16		14
left1 hand			14	-7
left1 hang				5
left1 hold	7
left1 laundry	7
left1 lay	-16			26
left1 living room	10
left1 loose	13
left1 lose	10
left1 make	12
left1 maybe	-14		38
left1 me	-5	19
left1 miss		18
left1 mix				23
left1 need		17
left1 new	-42	35
left1 one's	6
left1 only			23
left1 open				4
left1 or	5
left1 order	-19	28
left1 other	7
left1 outta	14
left1 past	7
left1 patch	15
left1 plug	5
left1 point	8
left1 pour	-18			24
left1 rate	10
left1 read	11
left1 replace				5
left1 return	-17	-10		-7		37
left1 right	-10	17
left1 sand	-17	10	5
left1 scrape	5
left1 screw				7
left1 scribe	9
left1 send	-5					9
left1 set				17
left1 short	-26	54
left1 sit		7
left1 stick	-6			17
left1 still	-15		25
left1 supply	15
left1 swap	-5			26
left1 t finish.	-7		6
left1 t tool.			13
left1 t work.			7
left1 take	-13			10
left1 that	9
left1 that's	-12			9
left1 them					13
left1 there's			8
left1 thing	-11		20
left1 think			7
left1 those	14	-13
left1 through				33
left1 throw	-31	23
left1 tile	-14	19
left1 till	5
left1 try			15
left1 us	-13	25
left1 use				31
left1 v buy.	-26	25
left1 v need.		14
left1 v return.	-17	-10		-7		37
left1 v use.				31
left1 wall	7
left1 we're		14
left1 you	10
left2 -		9
left2 /	-6	8
left2 a	-5	12
left2 about	24			-9
left2 again				4
left2 air	9
left2 already	-8		7			5
left2 away	6
left2 bag	-17	7		8
left2 bath	4
left2 bay	9
left2 be	12
left2 bend	13
left2 big	10
left2 black		-5	11	-8
left2 block				6
left2 bolt				8
left2 book	8
left2 bottom	9
left2 bracket		8
left2 bring	-19
left2 burn				19
left2 can	8
left2 can't	5
left2 cap	-22			20
left2 ceiling	5
left2 change	-36	-10		29
left2 closet	15
left2 could		13		-25
left2 cover	13
left2 didn't	-21	18
left2 ding	10
left2 dog	7
left2 don't	27
left2 down			6
left2 drain	5
left2 dry				5
left2 each	24	-16
left2 eat				14
left2 em	26
left2 every				9
left2 fill	-9			23
left2 finish				5
left2 flash	11
left2 flat	5	-8
left2 foam	-16			27
left2 frame	6
left2 from	13
left2 garage	13
left2 give					12
left2 go				5
left2 gonna		6
left2 good	10
left2 grab	5
left2 guy	8
left2 hall				9
left2 hard		-9		6
left2 has				4
left2 have			10
left2 her	10
left2 here	9
left2 homeowner	9
left2 hook	8
left2 house	8
left2 i'd	-7	23
left2 i'm		13
left2 i've	-7		24
left2 in	11
left2 inspector	10
left2 instead	16			-11
left2 joint	-9			5
left2 just				5
left2 kit	-7
left2 kitchen	9
left2 let go	18		-4
left2 lid	-25			30
left2 line	-11			18
left2 loose	4
left2 lot		-9
left2 make		9
left2 mark.	-7	11
left2 miss		9
left2 mud				7
left2 nail	-13			26
left2 need	-13	18
left2 nobody	6
left2 nothing	23
left2 now				13
left2 only			6
left2 order	-9	12
left2 owe	-26	19			15
left2 owner	11
left2 peel	11
left2 pick	-13				28
left2 pull	11
left2 put	-20			41
left2 right	6
left2 roof	8
left2 sand	11
left2 scribe		5
left2 see	-8			16
left2 send	-7					26
left2 set	20
left2 she	8
left2 sheath	5
left2 sheet	12
left2 shim			15
left2 shop	-22	-9	14	10
left2 short		9
left2 should	18
left2 shy				10
left2 side	20
left2 somebody's	5
left2 splice	8
left2 stairs	6
left2 still			10
left2 swap	-9			14
left2 take						20
left2 test	8
left2 the lady		7
left2 there's	-22	-7	45	-14
left2 this				7
left2 those		6
left2 through	11
left2 tile	12
left2 till	12
left2 trim	5
left2 truck	7
left2 use	-32			49
left2 v have.			10
left2 v use.	-32			49
left2 walls	28		-5
left2 want	7
left2 water	7
left2 we'll	-26	31
left2 we're		19
left2 white	-30	18	7
left2 wide	15
left2 will	-4	22
left2 wire	10
left2 with				9
left2 won't		8
left2 wrap			4
left2 wrong	6
left2 you	11
left3 already				8
left3 another			-9
left3 are				25
left3 back	-13
left3 behind	6
left3 black	9
left3 board	-30	23
left3 both	22			-14
left3 box	8
left3 break	6
left3 bring	5
left3 can't	-11			17
left3 drop	12
left3 electrician	25
left3 em	14
left3 end				14
left3 every				6
left3 finish	-8			14
left3 flat	5
left3 gap		5
left3 glue	7
left3 gotta	5
left3 hall	9
left3 have	16
left3 he					8
left3 her	18
left3 his	10
left3 hit				8
left3 holes	12
left3 i'll	26
left3 i've	-5			7
left3 if	12
left3 joint	-13		7
left3 just	-11			12
left3 last	-19			18
left3 leave			21
left3 like	4
left3 living room	12
left3 loose	9
left3 maybe	-8		17
left3 miss	10
left3 my	13
left3 nail	5
left3 new				14
left3 nobody	8
left3 off	5
left3 only	17
left3 order	6
left3 outside	15
left3 pack	-6	7
left3 paint			12
left3 pick		17
left3 pipe				8
left3 pull	19
left3 replace	-10			20
left3 roll	-10		18
left3 run	8
left3 sand	15
left3 send	-13	15
left3 she's	6
left3 shim	17
left3 side				10
left3 so	-29	12	11
left3 somebody	-19	22
left3 supposed		10
left3 tape	26
left3 the lady	-14		21
left3 them		-6	16
left3 then	17
left3 there			14
left3 there's	11
left3 they	21
left3 tie				8
left3 tile	-5	16
left3 too		7
left3 use	23			-10
left3 water	16
left3 were	15
left3 within	12
left3 x		18
length after have far	-27	30
length after need far	-6	-10	11
length after need sentence		32		-12
length after used sentence	-24		18
length beside get	-36	6	25
length beside need		21
length beside need b nobody	-22	32
length beside need b person		17
length beside nothing	-10
length beside other b nobody		15
length beside run	-14			27
length beside undefined is other	7
length beside use	-20			27
length beside use pp nobody	-13			21
length beside want	-15	28
length beside work b nobody	17
length beside work pp nobody	30
length beside work pp person	-32			37
length buy imperative behind	-12	22
length cue back	17
length cue have	-18		53
length cue need		50
length cue used				18
length have present behind	-10	-7	25
length kept	-22	5	22	-10
length left #	-30			15
length left about	-11		7
length left and	-42	47
length left at	24
length left every	23
length left for	19
length left get	-25	15
length left is				5
length left it's	21
length left need	-24	36
length left of	38	-31
length left over	18
length left the	26
length left up	-20			16
length name flawed	-29	13	8
length named here material	-61	47
length named here part	-19	34
length named here word	-10	10
length need modal behind	-30	39
length need owed behind		18
length not ahead		5		-5
length null none no	-8
length other imperative behind	-7	23
length other modal behind	-8
length other past behind	-31	-16	42	-10
length pointing	-18		21
length right Q	24
length right and		18
length right down	13
length right from	4
length right in	-22	-9	8	14
length right leave	-37		46
length right of	-31		23
length right short				-7
length right up		-21		23
length right with	11	-10
length says copula before	-15	16
length says copula behind not	5
length says imperative behind		18
length says modal behind		19
length says none no	-8
length says owed behind		14
length says past before	-33	-15	4	27
length says past behind	-16			19
length says present behind	-20	6	11
length sized	-76	29		31
length sold so true	-19	7
length then move pp	-21		39	-5
length then work b	-31	27
length use past behind				16
length verb get behind	-45		37	-6
length verb have behind	-10	-7	25
length verb need behind	-5	29
length verb null no	-8
length verb put behind	-38	5		31
length verb run behind	-22	-5		31
length verb use behind				16
length verb want behind	-13	26
length whole clause	-24	20		13
length work imperative behind	25
length work past behind	-12			31
list have	-20	-27	51	-26
list need	-24	60		-19
list used	-28	-29	-10	41
many	8
marked	-26	26
meant back 1	-7
meant back 6	13
meant back 8	43		-15	-5
meant before more		11
meant before no		11
meant flawed false	17
meant place -		11	-9	-16
meant ran out	-44	51		-6
more		32
named before area				12
named before tool	-12		16
nameless	20
next copula other comma	21
next cue bought other	-5	5				4
next present same stop	9
next use buy imperative same	-19	31
next use buy modal same	-15	26
next use buy owed same	-27	12	19
next use buy past other	29	-11
next use have imperative same	28			-7
next use measure modal other	-9		23
next use measure owed other	-6	16
next use move imperative same	4
next use move present other		20
next use null imperative same			5
next use return past other	8
next use say modal other	7
next use say past other	-21			16
next use say present other		15
next use see present same	10
next use use imperative same	-8	-10		14
next use use modal same				-8
next verb add same	10
next verb arrive other	10
next verb auger same	17
next verb bin same	15
next verb blow same	20
next verb bolt same	-42			48
next verb borrow same			9
next verb box same	9
next verb bring other		-11
next verb buy other	7	-14
next verb call other	10
next verb cap same	16
next verb change other	22
next verb change same		-9			13
next verb chuck same	10
next verb clamp same	10
next verb clean other	15
next verb clip same	8
next verb come other		16
next verb complete other	-6	15
next verb count same			20
next verb dig same	19
next verb do other			-6		7
next verb drain same	12
next verb draw same	8
next verb drill other	12
next verb drill same	12
next verb drip other	-11			26
next verb drip same	-7	20
next verb drop other	19
next verb drop same	12
next verb dry other			-5	11
next verb either same	18
next verb feather same	19
next verb figure same	25
next verb find same	17
next verb fit other	7
next verb float same	7
next verb forget same					18
next verb give same						20
next verb glue other	29			-15
next verb go other		32
next verb gonna same	8
next verb grab same	-8	19
next verb guess same	5
next verb hit other	6
next verb hold other		-10
next verb hold same	15
next verb hook same		12
next verb hum other	18
next verb hum same		7
next verb know same	10
next verb lay other	-8	-15		26
next verb lay same		6
next verb lean same	-13	6		7
next verb lift other	12
next verb make other	11
next verb make same	5
next verb mark same	25			-10
next verb mention same	14
next verb mount same	-23	13
next verb mud same	25			-10
next verb must same	16
next verb open other	11
next verb order other	-4		13
next verb order same	-18	16
next verb paint same	18
next verb pass same				10
next verb patch same	17
next verb pick other	5
next verb pin same	9		-8
next verb pitch same	-6			16
next verb plane same	4
next verb plug other	6
next verb pop same		17
next verb pour same		6
next verb pump same	24			-7
next verb purge other	9
next verb rate same	16
next verb rehang same		-4
next verb reorder same	-24	31
next verb replace other	7
next verb reroute same	13
next verb reset same	6
next verb return other			14	-11
next verb run other				6
next verb say other	-11	26		-4
next verb screw same				5
next verb see other	22
next verb seize other	7
next verb send other				12
next verb send same		4
next verb shave same	10
next verb short same	-24				20
next verb should same	4
next verb sign same	21
next verb sister same	13
next verb sit other	-15			24
next verb skim same	16
next verb slap same	-12	10
next verb split same	11
next verb stain same	8
next verb stand same	-12	18
next verb staple same	6
next verb start other			4
next verb stay same	18
next verb stick same	-5
next verb strap same				4
next verb stretch same	7
next verb strip other	16	-4
next verb swap other			10
next verb swear same		-4		6
next verb swing same	-11			17
next verb take other	-9	10
next verb that'll same					8
next verb thin same		10
next verb tighten same	9
next verb touch same	20	-6
next verb trip same	15
next verb try same	15
next verb turn same	16
next verb walk same						5
next verb weep other	-4			13
next verb wipe same	6
next verb wire same	-6			14
next verb won't same	17
next verb work same	11
next verb yank same				10
one after have far	15
one after have sentence		15
one after need far				6
one after need here	-25	41
one after none far	-17
one after none here	6
one after used here	-10	-6		25
one beside add		10
one beside be	-7		6
one beside bring		18
one beside buy	-23			-10	9	15
one beside buy b nobody	-14	27
one beside come		8
one beside do	-9	18
one beside drip	10
one beside eat		-4		8
one beside find	15
one beside get	-10
one beside grab	-17	25
one beside have b nobody	4
one beside have b other	10
one beside have pp person				13
one beside hit	7
one beside lose	5
one beside make	8
one beside miss		7
one beside move b other	5
one beside need		17
one beside need b nobody	-15	22
one beside need b other		5
one beside need b person		15
one beside need s nobody		7
one beside need s other		6
one beside need s person		8
one beside nothing	-4
one beside order	-12	4			15
one beside other b nobody	-17	30
one beside other b other	-11	20
one beside other b person	-5
one beside other i other		15
one beside other i person	17
one beside other p person	-21		24
one beside owe	-13				16
one beside pick	11	-17
one beside put	-28			40
one beside set				5
one beside sister	-10			21
one beside sit	8
one beside stick	-13			20
one beside swap	-38	10		26
one beside throw	-9	8
one beside try	-7		19
one beside use				13
one beside use pp nobody				5
one beside want		8
one beside work bpp nobody	-20			36
one beside work bpp other	11			-11
one beside work bpp person	-17			36
one beside work i other	11
one beside work i person		12		-9
one beside work p person	7
one beside work pp nobody	-10			24
one beside work pp person				28
one beside work s other	13
one buy imperative behind		16
one buy past behind	-42	-21		-15	37	14
one cue bought	-25				17	10
one cue need	-9	45
one false	-8
one kept	-39		16
one left #	-21	11
one left +	-17	11		6
one left about	21
one left add		10
one left and	-38	35
one left as	11
one left be	-16	8	12
one left bring		16
one left buy	-23			-10	9	15
one left by	15
one left cut				10
one left for		9
one left grab	-9	16
one left hit	7
one left it's	-26	38
one left me	-9	25
one left miss		9
one left need	-5	21
one left not	5
one left off	6
one left order					17
one left put	-10			17
one left run		5
one left set	-14			22
one left sister				9
one left stick	-17			22
one left that's	26
one left there's	6
one left use	-35			41
one left with	-14
one measure modal behind	-40	43
one measure present behind	10
one move owed behind	-10			-8	21
one move present behind	6
one named before area	-25	21
one named before material	-27	15
one named before part	-35			28
one named before surface	8
one named before tool	-30	8	18
one named here finish	-37	43
one named here material	-27
one named here part	-63	19		14
one named here surface	6
one named here tool		11
one need modal behind	-9	8
one need owed behind	-7	22
one null copula before	-25	33
one null modal behind	-21	31
one null none no	-14			5
one other copula before	-7
one other imperative behind	-26	32
one other modal behind		16
one other owed behind		7
one other past before		6		-10
one other past behind	-8		15
one right Q	-4
one right T		13
one right and	-41	41
one right are	-36	16		19
one right before	10
one right from	-9			6
one right in	-8			21
one right no	43	-26		-13
one right now	10
one right of	6
one right out	-6
one right over		-4		8
one right right	7
one right the	-21	10
one right there	-5	17		-9
one right through	19
one right under	-9			13
one right up		-8		4
one says copula before	-32	29
one says copula behind not	4
one says imperative behind		21
one says imperative behind not	-9			12
one says modal behind		29
one says modal behind not		9
one says none no	-13			10
one says none no not	-8	20
one says owed behind		18
one says owed behind not		-11			16
one says past before	-20	10		6
one says past behind not				16
one says present behind not	14
one sized	-43	25
one then move b		12
one then move p	14
one then move pp	16
one then move s	-20	25
one then other i	-16			14
one then other p		14		-5
one then undefined will	-23	22			8
one then work i	-8			18
one then work pp				18
one true	-6	22
one verb add behind	-5	16
one verb be before	-7
one verb bring behind	-17	28
one verb buy behind	-20			-5	13	12
one verb come behind	-14	25
one verb cut behind				8
one verb do behind	-14		14
one verb find behind	19
one verb get before		13		-16
one verb get behind	-20	8	10
one verb glue behind	-9
one verb go behind					12
one verb grab behind	-8	18
one verb hang behind	-14			19
one verb like behind	-10	18
one verb lose behind	5
one verb make behind	6
one verb need behind		18
one verb null before	-25	33
one verb null no	-14			5
one verb order behind					20
one verb owe behind	-25	6			19
one verb put behind	-13			24
one verb say behind	16
one verb send behind		11
one verb set behind				12
one verb sister behind	-10			21
one verb stick behind	-17			22
one verb swap behind	-28	16		8
one verb take behind	28
one verb throw behind	-9	8
one verb try behind	-7		19
one verb use behind				11
one verb want behind	-12	13
one whole clause	-10			14
one work past before	-32	11		22
one work past behind				34
opens &	5
opens +				10
opens because	6
opens clause area	-27			44
opens clause count	-33			10
opens clause length	-30			15
opens clause one	-21	11
opens clause pack	-33
opens clause volume	-32	9
opens clause weight	-40	20		20
opens oh	24
opens ok	26
opens please		22
opens plus	-23	40
pack after bought here		-27	-12	-25	36
pack after bought sentence	-4	-7		-19	20
pack after have far	-16	4
pack after have here	22			-10
pack after have sentence	-10	30		-5
pack after need far			18
pack after need here	-15	50
pack after need sentence		46		-20
pack after none far	-28
pack after none here	-13	26
pack after none sentence	-12
pack after returned far	-16				9
pack after used here	-15	-17		41
pack after used sentence	-32			8
pack bag	18
pack beside be				5
pack beside burn	-8			32
pack beside buy	-6	7			5
pack beside buy b nobody		15
pack beside eat	-21		-8	35
pack beside get			15
pack beside go				34
pack beside grab	-23	23
pack beside have			27
pack beside have b nobody	-18		26
pack beside have b person			32
pack beside is	-27	12	18	-11
pack beside leave			22	-10
pack beside move p nobody	-6			27
pack beside move p other				24
pack beside move p person	-14			24
pack beside move pp other	24
pack beside move pp person	-13	-7	29	-8
pack beside need		11
pack beside need b nobody		15
pack beside need b other		20
pack beside nothing	-46
pack beside other b nobody		37
pack beside other b other	-36	43	-15
pack beside other b person	4
pack beside other p nobody	-14	-23	14		7
pack beside other p other	-25	-20		55
pack beside other p person			50	-5
pack beside other pp nobody	-24	-29	11	-19	28
pack beside pick	-26	14		-10	19
pack beside put	-27	10		6
pack beside run		-11		14
pack beside set		-24		10
pack beside take	-48			30
pack beside undefined is other	-4	9	6	-13
pack beside use				27
pack beside use b person				17
pack beside use pp nobody				7
pack beside use pp other	-16			27
pack beside use pp person				29
pack beside want		19
pack beside work b other	-25	30		-5
pack beside work b person	-15	-10	7	13
pack beside work bpp nobody	-33	23
pack beside work bpp person		-24		14
pack beside work i other				6
pack beside work pp other	-21			40
pack beside work pp person	-7	-6		48
pack bucket	31
pack buy imperative behind		20
pack buy modal behind	-30	35
pack can		8		-10
pack coil	6
pack cue back	-23				13
pack cue bought	-40	-21	-23	-7	62
pack cue have			75
pack cue need		64
pack cue used				5
pack flat	36	-7
pack have present before		4	-9	-6
pack have present behind	-9		31
pack kept			41
pack left #	-33
pack left G	-20			36
pack left Q	-33	42	4	-40
pack left T	-34	-29	13		19
pack left about	-9			6
pack left and	-16	27
pack left bring	-4		5
pack left buy	-10	8			7
pack left get	-52		43	-4
pack left grab	-17	9			8
pack left have	-21		33
pack left in	12
pack left is	-19	19	7	-10
pack left leave	-15	-16	36	-15
pack left of	4
pack left over	14	-11
pack left put	-7	4
pack left short	-6	33		-6
pack left take	-40			31
pack left the	-16	-18	13	8
pack left there's	-28	-30	47	-18
pack left through				35
pack left up	-12				7
pack left use				14
pack left want	-20	32
pack left with	-12	-23		41
pack length	5			-7
pack list need		35	-5	-14
pack more	-13	60		-9
pack move past before	-9		33
pack move past behind	-9		9	8
pack name flawed	-7
pack named before area	-9	-29		34		5
pack named before fixture	-4
pack named before material	-6
pack named before surface	6
pack named here finish	-32	36
pack named here fixture		15
pack named here material	-42
pack named here part			5	-23
pack named here surface	-15	21		-11
pack named here word	-56		10
pack need modal behind			8
pack need owed behind		27
pack need past before	-30	40	-9	-19
pack need present behind	-24	37
pack not ahead	-25	47
pack null copula before	-29	31	-17
pack null copula behind	-33		26
pack null imperative behind	-6	21
pack null none no	-36
pack other copula behind	-13	5		7
pack other imperative behind		31
pack other modal behind	-23	41		-14
pack other past behind	-7		14
pack other present behind	8	-16
pack pointing	-19	5
pack right #	-27
pack right +				8
pack right Q	-13		-19	26
pack right T	-37	21	10
pack right and	-27	12
pack right are	-10	-9	26	-12
pack right be	6
pack right by		7
pack right from	-18	6		-34	16
pack right go	-36	-26	-27	53
pack right have	5		-8	-9
pack right in			37
pack right is		-18	10
pack right leave			32
pack right no	21	-20	8	-9
pack right of	-11			10
pack right on	-4		35	-21
pack right say	23
pack right short	-29	43
pack right the	-33
pack right to	-31	15		-16		9
pack right up	29	-39	-5
pack right where	-5	-12		22
pack roll	9			-10
pack say imperative behind	-26	22	-5	5
pack say present behind		14
pack says copula behind	-27		14
pack says copula behind not	-22	33		-7
pack says imperative behind	-15	51
pack says modal before	-11	11	7	-16
pack says modal behind		28
pack says none no	-30
pack says owed behind	-4	49
pack says owed behind not	26	-17
pack says past before	-25
pack says past behind	-7			18
pack says past behind not	-10
pack says present before	-7	26
pack says present behind	-20			8
pack sheet	15			-13
pack sized	-34	17
pack sold so false	-46
pack sold so true	-40
pack then move p	-39	-23	-21	57
pack then move pp			36
pack then other b	13	-32	14	-11
pack then other p				7
pack then other s	4			-10
pack then undefined is			18
pack then undefined will	-35	37
pack then work b			-20		6
pack then work s	-12			6
pack tin	5
pack tub	35
pack use past behind				25
pack use present behind	-7			40
pack verb be behind	-13	5		7
pack verb blow behind	-16			10
pack verb burn behind				15
pack verb buy behind		5
pack verb go behind	-22			31
pack verb grab behind	-21	27
pack verb have before		4	-9	-6
pack verb have behind			27
pack verb leave before			33
pack verb leave behind		-17	34	-16
pack verb need behind		10
pack verb null before	-29	31	-17
pack verb null behind	-33	4	22
pack verb null no	-36
pack verb pick behind	-22			-6	31
pack verb put behind	-24	22
pack verb run behind		-12		17
pack verb say before	26
pack verb take behind	-44		5	23
pack verb throw behind	-33				21
pack verb use behind				31
pack verb want behind	-21	39
pack whole clause	-52
pack work imperative behind		24		-7
pack work modal behind		5		-9
pack work past before	-29	-27		40
pack work past behind	-14			53
pack work present before	-24	25		-5
pack work present behind	-29			29
plural area	10
plural count	-23
plural one	-17	10
plural pack	-5
plural volume	-36	11	7
plural weight	-19	12
pointer after need here	6
pointer beside nothing	10
pointer cue need	6
pointer cue used				14
pointer flawed						7
pointer name flawed						7
pointer named before material	-5			15
pointer named before part	19
pointer named before word	5
pointer right #				6
pointer says imperative behind	7
pointer says past behind	-20			18
pointing	-45			10
right &	-25	20
right (		9
right ( Q	28	-10
right +	-14			7
right + Q	-28			20
right -	16
right /	-7
right / G	-8	17
right @ Q	-23	13		12
right Q G				10
right Q Q	13
right Q all	15
right T Q					15
right T to	-11	17
right a Q		6
right above the	12
right across	10
right across #	13
right along the				7
right already			12
right already #			8
right and G	-12	17
right and Q	-13	17
right and a	-27	15
right and it				5
right and no			6
right are Q	6
right are hang	-13			20
right are in	-9		4	5
right are on				6
right are up	-18			32
right around the				20
right arrive			15
right back		7
right back on		13
right bend	7
right bend #	16
right bow	9
right box						9
right bring	5
right buzz	5
right by G	26	-14
right can	-12
right can't		7
right change				5
right chip	13
right clip		6
right come Q	-25		21
right come back	9
right come with			21
right crook	16
right cup		13
right cut				9
right cut #				15
right dead	10
right dead #	12
right deliver			4
right didn't	4
right doesn't	11
right don't let	-9			6
right drill	20
right each	-7	-9		29
right each #		-15		17
right eat	9
right extra	-38		16	13
right fit				20
right fit #	-19			28
right fix	-10			15
right flush	12
right for G	-14			15
right for Q	15
right for it		6
right for that	-22	5	13
right get Q	24			-12
right get no		4
right glue	-17			29
right glue #	-11			23
right go #				22
right go Q	10
right go down	13
right go on				18
right go through	9
right has no	19			-7
right hasn't	-9	14
right have the	26	-7
right head	-9	20
right here			29
right here #	-24		35
right if you	15
right in #	-16			63
right in Q	10
right in T	8			-4
right in all	7
right in and	-21			26
right in it				6
right in my	-25		40	-5
right in there				7
right inside		10
right into	-11	-5		23
right is break	27			-5
right is do	6
right is go	-8			24
right is gonna	-11	18
right is split	6
right just	6
right leak #	9
right leave			38
right leave #			40
right leave from			12
right leave in			24	-11
right leave on				-6
right leave over			24
right loose			12
right more		6
right more #	-28	39
right mount				5
right mount #	-8			20
right move	11
right my	9
right need #		17
right need Q	9
right next		8
right next #	-7	15
right no #	9	-16	13
right no G	-30	29
right nothing	11
right now #	7
right of it	-8			5
right of them	-17			26
right off #	8
right on #				23
right on G	-9	4
right on Q	31
right on T		5
right on every	21			-10
right on hand	-17	-20	35	-17
right on in	9
right on order	-34				52
right on site	-8	-19	32	-21
right open	5
right or	19
right order					8
right order #					21
right out #	13
right out T	-10	16
right out in	-6			15
right out of				10
right over #	-11	-19	13	-17		18
right pack	-9	16
right peel		14
right pipe	12
right plug	9
right replace				10
right replace #	19
right roll			18
right roll #	-8		24
right sag #	11
right seize	10
right seize #	10
right short		27
right short #		36
right short by	-5	13
right should	-11	20
right show #	5
right snap		7
right split	19
right stain	-15			12
right still			28
right still in	-27	-8	42
right still to	27
right strip #			5
right stuff		9		-5
right swap				5
right swap #				10
right sweat	-5	15
right tear #	4
right tell	-5			13
right test #	7
right that go			7
right the Q	-29	20			11
right the box	11
right the old	-5
right then				12
right there	-4	22
right there #		6
right they	4
right through #	16
right through it	9
right through the				12
right till the	11
right to G	12
right to Q	21
right to go	10
right to the						9
right to wall	6
right turn			10
right turn up				7
right under #				10
right under G	9
right under it	8
right under there	4
right underneath	5
right up #				23
right up on	-5			19
right up the				9
right up there	28	-10
right use				19
right use #	-38			47
right which is	6
right wire	-6			20
right wire #				10
right with G	6
right with Q	17
right with a	10
right with it	7
right with me		12
right with no	5
right without	12
right1 &	-25	20
right1 (		9
right1 +	-14			7
right1 -	16
right1 /	-7
right1 across	10
right1 already			12
right1 arrive			15
right1 back		7
right1 bend	7
right1 bow	9
right1 box						9
right1 bring	5
right1 buzz	5
right1 can	-12
right1 can't		7
right1 change				5
right1 chip	13
right1 clip		6
right1 crook	16
right1 cup		13
right1 cut				9
right1 dead	10
right1 deliver			4
right1 didn't	4
right1 doesn't	11
right1 drill	20
right1 each	-7	-9		29
right1 eat	9
right1 extra	-38		16	13
right1 fit				20
right1 fix	-10			15
right1 flush	12
right1 glue	-17			29
right1 hasn't	-9	14
right1 head	-9	20
right1 here			29
right1 inside		10
right1 into	-11	-5		23
right1 just	6
right1 leave			38
right1 loose			12
right1 more		6
right1 mount				5
right1 move	11
right1 my	9
right1 next		8
right1 nothing	11
right1 open	5
right1 or	19
right1 order					8
right1 pack	-9	16
right1 peel		14
right1 pipe	12
right1 plug	9
right1 replace				10
right1 roll			18
right1 seize	10
right1 short		27
right1 should	-11	20
right1 snap		7
right1 split	19
right1 stain	-15			12
right1 still			28
right1 stuff		9		-5
right1 swap				5
right1 sweat	-5	15
right1 t area.	9
right1 tell	-5			13
right1 then				12
right1 there	-4	22
right1 they	4
right1 turn			10
right1 underneath	5
right1 use				19
right1 v use.				19
right1 wire	-6			20
right1 without	12
right2 22	7
right2 @				10
right2 about	27
right2 along	-16	20
right2 anything		11		-5
right2 as	4
right2 book	10
right2 bore			7
right2 box	11
right2 break	6
right2 cap		8
right2 ceiling		7
right2 center	18	-12
right2 crook	19
right2 cut	11
right2 deliver	-32				8	9
right2 drip	6
right2 drop	4
right2 each	-11	14
right2 end	-7			17
right2 entry	17
right2 every	17
right2 except	4
right2 extra	-23	6	15	-9
right2 for		20
right2 from	4
right2 front	-16	-6		27
right2 gonna	-7	16
right2 hand	-10	-16	33	-13
right2 hang		-7		6
right2 has	5
right2 her			11	-17
right2 here	10
right2 hole	24			-21
right2 hollow	15
right2 home	-16		19
right2 install	-23			27
right2 into	5
right2 just	10
right2 keep	15
right2 kitchen		5
right2 leak	19
right2 lift				7
right2 maybe	7
right2 me		10
right2 my	-4		33
right2 need	-21	33
right2 new	9
right2 notch	15
right2 now				9
right2 off	5
right2 oil	10
right2 once	7
right2 ones	-30	14	16
right2 only	5
right2 order	-26				45
right2 other		-15	17	-21
right2 past	10
right2 plug	17	-6
right2 pull	11
right2 put	-16			16
right2 reach	8
right2 read	15
right2 red		10
right2 replace	-20			25
right2 run	28
right2 sand	12
right2 send	-13	19
right2 she	17
right2 shot	8
right2 site	-8	-19	32	-21
right2 so	19
right2 soft	13
right2 split	-26	6		13
right2 stand	6
right2 still	-9
right2 stop	-20		20
right2 strip	9
right2 t fixture.	6
right2 t tool.	-5		17
right2 t work.	16
right2 their			9	-5
right2 them	-14			24
right2 then	13
right2 this	19
right2 those	27	-19
right2 time	5
right2 too	-12	19
right2 too short	20
right2 touch	11
right2 truck		-9	9	-8
right2 v buy.	-35			-7	43
right2 v need.	-9	22
right2 v say.				6
right2 v see.	6
right2 wet	6
right2 where	14
right2 white	-18	27
right2 you	7
right3 (					7
right3 about	6
right3 above	19
right3 across	14
right3 air	19
right3 already	5	-6
right3 anything	-7	14
right3 around	-31			34
right3 bag	-16	18		-10	7
right3 bar				5
right3 basement			12
right3 belly	8
right3 bend		-4
right3 big	5
right3 book	-4	12
right3 both	13
right3 box	-22		28
right3 bracket			5
right3 ceiling	17
right3 cellar		-9	12
right3 clamp	-20	21
right3 clean	-16	15				9
right3 closet	11
right3 corner	11
right3 counter	-5					15
right3 deep	5
right3 den	15
right3 enough	7
right3 flat	13
right3 frame	12
right3 front	7
right3 get						10
right3 glue	12
right3 good	18	-7
right3 grind			7
right3 half	-10		17
right3 hall	7
right3 hallway	13
right3 hand	-9
right3 hang	13
right3 have	-17	12	6
right3 he		12
right3 her	-19		7
right3 hole	8
right3 if	-8	14
right3 island	-21
right3 just	7
right3 kitchen	9
right3 list		25		-13
right3 lock		4
right3 loose	23			-12
right3 me				11
right3 not		12
right3 now				5
right3 off	6
right3 office	-10	-5	12
right3 ones	-9	20
right3 only	10
right3 open	8
right3 opened up	18
right3 other	19
right3 over	20			-8
right3 own	24	-16
right3 pantry	-6		23
right3 powder room	-21		19
right3 proud	7
right3 pull	13
right3 salon	-5			14
right3 same	19	-10
right3 second				5
right3 set	8
right3 shed	-25	-8	33	-19
right3 shop	-17		22
right3 short		10
right3 solid				17
right3 stand	-13			18
right3 steps	12
right3 still	24
right3 street	5
right3 tap	7
right3 them		18
right3 then	6
right3 they	20
right3 thing	-21			12
right3 though	-25	15		13
right3 truck	-23		29
right3 until	22
right3 van	-21	-14	47	-22
right3 walk	13
right3 wall	15
right3 want	-10		18
right3 we	6
right3 where	17
right3 which	33	-20
right3 wire		12		-18
right3 wrap		13
right3 you				5
sold so false	-10
sold so true	-39
sort area	-8			12
sort pack	-18
sort volume	-33
sort weight	-9
then arrive			8
then arrive pp			14
then bag		16
then bag b	-10	20		-7
then balance	14
then bend	19
then bend pp	7
then book pp		5
then bow	23
then bow pp	20
then box	-9		9
then box b	-21		23
then box s						8
then buy	-7		-6		11
then buy b	-6			-5	33
then buy pp	-17	-16			28
then call	5
then call b	8
then can't		5
then can't will		5
then change				5
then change pp				10
then chip	13
then clean	7
then clean b	12
then clip s		6
then come s	10
then complete	5
then complete b	5
then core				4
then core b				4
then cover b		7
then crook	14
then crook pp	14
then cup		13
then curl	6
then cut bpp				8
then deliver			4
then didn't					15
then didn't will					15
then dig	5
then do b	-14	14
then do s	12
then drill	16
then drill pp	16
then drop	15
then drop pp	15
then dump	6
then feel	7
then feel s	7
then fit				20
then fit pp	-25			31
then fit s	11
then fix	-5			13
then flush	8
then get b	-5	14
then glue	-14			29
then glue pp	-14			29
then go p				26
then grind pp			7
then hang b	35	-27		-7
then hasn't		9
then hasn't has		9
then head		15
then head b		5
then hold b				13
then hold i				8
then keep	5
then land	5
then land b	19
then land pp	14
then leak	7
then leave			22
then leave pp			27
then leave s				10
then match	-4	11
then match b		7
then measure b				5
then measure pp			13
then mount				5
then mount pp				9
then move p				26
then move pp			25
then need pp		37
then open b	19
then open pp	-13			13
then order	-6				47
then order b	-19				48
then order pp					16
then own	23	-18
then own b	23	-18
then pack	-13	21
then patch	-9			19
then peel		15
then pipe	10
then pipe pp	12
then plug	7
then plug pp	7
then plumb	23			-7
then pull i		9
then pull pp	7
then replace				12
then replace pp				12
then roll			8
then roll b		-6	18
then run bp	17
then say pp				8
then scratch	11
then scratch b	25	-10
then seal				9
then see b	11
then see pp	13
then seize	10
then seize pp	10
then send	6
then send pp	7
then set bpp	9
then should	-7	5	6
then should will	-7	5	6
then show b	16
then show pp	-21		19			4
then sit			7
then sit i			14
then sit pp	-9		19
then size	5
then size b	6
then snap		10
then snap pp		10
then sound	12
then sound b	19
then split	16
then split bpp	16
then squeak	5
then squeak s	5
then stain	-15			12
then stain pp	-15			12
then stand	-11			20
then start	9
then strip b	-22		20
then stuff		6
then stuff b		10		-5
then swap pp				13
then sweat		8
then sweat s	6
then take b	6	-11
then tell	-19			26
then tell pp	-21			28
then test pp	5
then turn b			14
then turn pp	4
then use				19
then use pp				27
then wait	20	-8
then wait b	24	-21
then walk	5
then walk b	7
then want b	10
then want pp	-16	20		-8
then wire				18
then wire pp				18
then work bp	17
then would	-12	19
then would will	-12	19
then wrap		5
then wrap pp	7
unit bag	-45		5
unit bottle			8	-17
unit box	-38
unit bundle	-20
unit can	-37			36
unit case	-29		28	-7
unit coat	61
unit each	-46	18
unit from said	-33
unit from shared	-44	42
unit gal	-19
unit kg		-21	17
unit kit	-29		8	5
unit length	-31				7
unit pack		16
unit pail	-28			25
unit pair	-8
unit pallet	-12		27	-22
unit pt	-31			6	12
unit qt	-56		27
unit roll	-57			11
unit row	21	-13
unit set	-10	23
unit sheet	-20			22
unit sleeve	-26	16	4
unit sq ft		10
unit sq m				10
unit square	-37			34
unit stick	-63	29
unit tin	-43		4	12
unit tub	-34
unit tube	-51	12
unit yd	-35	39
use buy before	-26				16
use buy behind		8
use buy imperative behind		25
use buy modal behind	-11	22
use buy owed before	-19	25
use buy past before	-23	-7			26
use buy past behind	-20	-31		-11	63
use have past behind	14
use measure modal behind	-34	45
use move modal before	5
use move modal behind	6
use move owed behind					7
use move past before			5
use need behind		13
use need modal before	7
use need modal behind		10
use need owed behind		9
use need past before	-19	46
use need present behind		27
use other imperative behind		25
use return behind	-32	-13		-10		41
use say modal before	16
use say modal behind	10
use say past before	15
use use before				30
use use behind				16
use use modal behind		23		-23
use use past before	-10			35
use use past behind				17
use use present behind				33
verb add behind	-8
verb add past	-41	-11		45
verb arrive before			7
verb arrive behind	-7	10
verb arrive past			8
verb ask imperative	8
verb bend before	13
verb bend past	12
verb blow present		18
verb bolt behind	-11	-5		23
verb bolt past				17
verb borrow past		12
verb bow before	22	-4
verb box before				20
verb box behind				4
verb box present				23
verb break behind	-11	14
verb bring behind	-7	22
verb bring imperative		24
verb bring modal		17
verb bring owed	6
verb bring past	-26	-23	16	-12		27
verb bring present	-11	22
verb build behind	14
verb build past	11
verb burn behind				25
verb burn past				18
verb buy before	-29	7	-4		14
verb buy behind	-10
verb buy imperative	-12	41
verb buy owed		14
verb buy past	-25	-18			38
verb call present	11
verb can before	-12	7		8
verb can behind				4
verb can modal				11
verb cap behind	11
verb cap past	11
verb change before	-4			14
verb change behind	-8			14
verb change past	-24			31
verb change present				20
verb chip past	15
verb clean present	7
verb clear behind				7
verb clip behind	12
verb close behind	9
verb close present	13
verb come modal	-22	29
verb come past					9
verb count behind	11
verb count present	14
verb cover before	25
verb cover present	24
verb deliver before			4
verb dial past	18
verb ding behind	10
verb ding past	11
verb do imperative	-4		11
verb do past				10
verb doesn't modal	7
verb don't behind		8	-9
verb drill before	13
verb drill behind	6
verb drill past	19
verb drive behind				16
verb drive past				16
verb dry before	-10		11
verb dry modal	7
verb dry owed		6
verb dump before		7
verb ease behind	5
verb eat past	10
verb falta behind		10
verb falta owed		10
verb figure behind		7
verb figure imperative	-16	29
verb figure present	18	-5
verb find imperative	-5	13
verb finish present				10
verb fit before				19
verb fit behind	-5			17
verb fit past	-45			48
verb fit present	10
verb fix before	-24	-4		35
verb fix past	-21	-5		37
verb float behind				6
verb flush imperative	14
verb foam behind				10
verb foam past				10
verb forget behind		11
verb fre behind			17
verb fre past			15
verb get imperative		47
verb get modal	11
verb get owed		6
verb get past			14
verb give past					7
verb glue behind				13
verb glue owed	6
verb glue past				25
verb go imperative		15
verb go past				18
verb gotta behind	4
verb gotta owed	4
verb guess behind	-13	22
verb guess present	-19	26
verb hang before				19
verb hang behind				14
verb hang past	-5			43
verb has behind	4
verb haul past	-13	19
verb have past	14
verb hit imperative	10
verb hold present	4
verb i'll behind		8
verb i'll modal		8
verb install past	-17	-5		28
verb keep behind	6
verb keep imperative	11
verb knock behind	7
verb knock past	8
verb land past	14
verb lay before	-11	11
verb lay behind	-21		4	7
verb lay modal	-8	15
verb lay past	-20			24
verb lay present			16
verb leak before	6
verb leave before			31
verb leave modal	16
verb leave past			14
verb leave present	5
verb level behind				5
verb lift behind	6
verb like modal		8
verb make imperative		6
verb miss behind	-10	23
verb miss present		6
verb mix behind				17
verb mix past				20
verb mount before	-8			20
verb mount past	-36			42
verb move before	13
verb move modal		6
verb move present			15
verb nail behind				6
verb need behind		18
verb need owed		13
verb need past	-17	40
verb nick behind	5
verb nick past	5
verb order before	-6				13
verb order behind		7
verb order imperative		11
verb order modal	-6	12
verb order past		-9			43
verb owe behind					5
verb owe present					5
verb pack imperative	-10	16
verb patch imperative	-5	11
verb patch past	17
verb pick behind					17
verb pick imperative		22
verb pick past		-19		-7	50
verb pipe past	14
verb plow past	27			-17
verb plug before	12
verb point behind	4
verb pour owed	9
verb prime behind	18
verb prime imperative	19
verb prime past	6
verb push behind	7
verb push modal	9
verb put modal		5
verb put past				16
verb put present	-14	31
verb rehang behind				13
verb relay behind	-7			15
verb relay past	-8			15
verb remind behind	4
verb remind imperative	4
verb replace before	-17			28
verb replace behind				15
verb replace past	-9			30
verb return behind	-32	-13		-10		41
verb return present			7
verb rod behind	-6	16
verb rod past	14
verb run imperative		10
verb sand behind	15
verb sand owed	10
verb sand past	9
verb say imperative	9
verb say modal	18
verb scrape behind	7
verb scrape past	9
verb scratch past						7
verb screw before				10
verb screw behind				8
verb screw past				6
verb scribe modal	10
verb seal present				7
verb seize before	11
verb seize past	11
verb send before		10
verb send behind	-4					19
verb send modal	-4	10
verb send past	-5					31
verb send present	7
verb set behind				4
verb set imperative	6
verb set past				15
verb shim before	6
verb shim behind	16
verb shim modal	4
verb shim past	18
verb ship past			5
verb should behind	-8			17
verb should modal	-8			17
verb show before	-4		9
verb show past	-10		13
verb show present	6
verb silicone before	8
verb sister past				16
verb sit modal		13
verb sit owed		-10
verb size behind	18
verb snake behind	5
verb snake past	6
verb snap before	-20	31
verb snap past	-8	24
verb snug behind	16
verb snug past	16
verb splice behind	8
verb split past	-18			24
verb stack behind	-20			28
verb stack past	-20			28
verb stagger behind	-7			15
verb stagger past	-4			13
verb stain before	-24	11		11
verb start before	6
verb stick past				14
verb stop behind	5
verb stop present	-14		20
verb strap behind	-23		10	7
verb strap imperative	-14		17
verb strip before	6
verb strip past	6
verb stuff behind	-18
verb stuff imperative	-6
verb swap before	-11			28
verb swap imperative		6
verb swap modal	13
verb swap past	-6			35
verb take before						8
verb take behind						13
verb take modal		18		-14
verb take past	-10					35
verb tell before	18
verb tell past	14
verb test behind	5
verb test past	8
verb throw past				6
verb tie behind	13
verb tile past	8
verb top behind	17
verb trim before				4
verb trim past	-6			15
verb try imperative	-8		14
verb try past	15
verb turn behind	12
verb turn imperative	11
verb turn past	7
verb unopen past	-24	-5	35	-22
verb use before				30
verb use behind				16
verb use modal		19		-21
verb use past				24
verb use present				33
verb wacker behind	5
verb wacker past	5
verb wait behind	11
verb want modal	-9	16
verb want past		4
verb want present		19
verb wash behind	9
verb weep before	4
verb weigh behind	-16			15
verb weigh present	6
verb will before	5
verb will behind	14
verb will modal	14
verb wire before				13
verb wire past				9
verb would modal	-11	18
verb wrote behind	10
verb wrote present	10
volume after have sentence	-19	35		-6
volume after need far		-10	34	-6
volume after need here	12
volume after need sentence	-39	34
volume after none far	-43		27
volume after none sentence	-34			21
volume after used far	6	-4	10	-26
volume after used sentence	-4			10
volume beside bring	-9
volume beside figure		14
volume beside get	-12	5	9
volume beside go	-19			36
volume beside have	-14		30
volume beside have b person	-11		27
volume beside need		27
volume beside need b person	-19	45
volume beside nothing	-32	5	15
volume beside other b nobody		15
volume beside other p person	-11	-5	28	-7
volume beside pour	-25			33
volume beside take	6	-18
volume beside use				26
volume beside use pp nobody	-5			24
volume beside use pp person				16
volume beside work pp other	-14	-19	-8	31
volume cue have	-43		70
volume cue need		15
volume cue used	-37			22
volume flawed	-23	16
volume have present behind	-14		30
volume kept	-21		17	-16
volume left #	-32	9
volume left about	17
volume left and	-36				16
volume left figure		14
volume left get	-9		15
volume left have			20
volume left need	-13	39
volume left pour	-25			33
volume left through	-13			29
volume left use				17
volume move past before	-17		15	7
volume move past behind	-11			26
volume name flawed	-16		-14	16
volume named before material	-8		28
volume named before part	31
volume named before surface	-7			22
volume named before word	-31	8	18
volume named here finish	-32		13
volume named here material	-57	7
volume named here word	-9	22
volume need owed behind		12
volume null copula behind	-27	6	9
volume null none no	-5		6
volume other imperative behind	-11	23
volume other past behind		-12	9	-6
volume pointing	-29	42	-11	-19
volume right #	-45			11
volume right and	-16	32
volume right in		-9		13
volume right leave			26
volume right of	-30	43	-6	-12
volume right on	-27		27
volume says copula behind	-40		18
volume says imperative behind	-25	46
volume says modal behind	-43	11		6	21
volume says none no	-5		6
volume says owed behind		12
volume says past before	-30
volume says past behind				10
volume says present behind	-6		15
volume sold so false	-9
volume sold so true	-28		20
volume then move pp			26
volume use past behind				26
volume verb bring behind	-9
volume verb figure behind		14
volume verb get behind	-18
volume verb go behind	-11			26
volume verb have behind	-14		30
volume verb leave before			31
volume verb need behind		16
volume verb null behind	-27	6	9
volume verb null no	-5		6
volume verb use behind				26
volume whole clause	-16	6		7
volume work past behind	-6			11
weight after need sentence	-9	26		-15
weight after used sentence	-13			20
weight beside hold	11
weight beside nothing	-8			5
weight cue have	-25	-14	27	4
weight cue used	-8			25
weight left #	-40	20		20
weight left at	15
weight name flawed	-8			10
weight named before material	-4			13
weight named before word		-5		13
weight named here material	-30	29
weight named here word	-34	11	19
weight null copula behind	22
weight null none no	-6			7
weight right #	-12
weight says copula behind	23
weight says none no	-6			7
weight says past behind	-10			22
weight says present behind	-6		19
weight sized	-21	11		10
weight verb null behind	22
weight verb null no	-6			7
weight work past behind	10
who nobody owed		17
who nobody present	-5		42
who thing imperative		16
whole false			17
whole true	-10
`;
