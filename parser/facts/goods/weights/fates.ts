/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after #	32
after &		17
after '	11
after (	-14		9	-27		12
after )	-25	20		-6		9
after +	-9	13
after /	-42	11	9	13
after 1	-14		21
after =	21
after @	-9			12
after about	29
after above	26
after acclimate			10
after across	18
after actually	18	-9
after add	-5	-13		19
after adjust	24
after aff	-13			19
after again	30
after against	23	-4
after ain't				11
after air	33	-7		-24
after allen	22			-6
after already	-5		4
after altogether	22
after am	-23			27
after american	-18	30
after an	15
after anchor	21
after any	6
after anybody's		17	-9	-16
after anyhow	11
after apart	13
after around				4
after arrive			8
after arvo	-7			14
after as				8
after asbestos	25	-20
after attic			-5
after b	10
after baby				5
after backsplash	-9			17
after backwards	25
after bad				5
after bag	-38	14
after bakery	5
after balance	-5	-19	18
after balcony	-17	-7	24	-11
after bang	-9	-8		19
after bare	9
after basement			6
after bathroom				17
after beat	13		-17	-22
after bed	25
after bedrooms	27
after belly	24
after belongs	5
after bench	-7	-13		15
after bend	7
after beside	33	-6		-22
after better	-15	22	-14	-4
after between	25
after bled	-6			15
after bleed	13
after bleeding through		5
after blow	31
after blue	-25	16	19	-9
after board	23	-15
after boil	23
after bolt				18
after bone	-24	17		8
after book	6
after bore	-14		12
after bought far copula	21
after bought far modal	26
after bought far none			9	-5
after bought far past	-5					22
after bought here		-13	-12	-16	28
after bought here and		-5			18
after bought here none	-14	-27	-21	-25	38
after bought here past	18
after bought here present	-11	-11			20
after bought here run-on	28
after bought here start	-12		-5	-13	22
after bought sentence					43
after bought sentence and	-14	-34			30
after bought sentence comma	-10	-38		-30	49
after bought sentence imperative		14
after bought sentence none	-12	-44		-37	50
after bought sentence past	-16	15		12
after bought sentence present					11
after bought sentence run-on	5
after bought sentence word	-11	27		-18
after bow	36	-13
after bowl		12		-15
after box	-29		15	20
after boy	9
after bracket		-7
after brass	5
after bridge	13
after bring	-10	24
after broke off	14
after brown		19
after brush	-19		20	-10
after bug	17
after build				10
after bury	18
after bust	27
after butt				6
after butt joint	8
after butter	-7			14
after button	-5			18
after buy	-37	35
after buzz	29			-6
after came off	-7		21	-9
after can't	-5	15
after carbon	11
after card	4
after carton	-21		16
after case	-23		20
after cat	23
after catch	18
after caulk	21			-8
after ceiling	10
after cellar	-8		23
after center	8
after centers	25		-12	-15
after centre	9
after centres	10
after chair		-10		5
after change	-18	-9		34
after channel	18
after chatter	29		-13	-9
after check	25
after chew			9
after chewed up	14
after chip						21
after chirps	7
after church	11
after clamp	-23	29
after click	-8		18
after clinic	16
after clip				12
after clog	17
after closet	17
after coat	5
after coffee				10
after cold	5
after column	24		-16
after coming off	13
after common		13
after compact	18
after cope	-19	23
after copier	22
after core				8
after correct	9
after corridor		-7		4
after corrosion	26	-6
after counter		-32				13
after course	22
after cover		16
after credit	5
after crook	30
after cross threaded	25
after crosse	9
after crosses		7
after crown	17
after crumbl	5
after crumbling	-19	20
after crush	15
after ctr	30	-14		-16
after cup	26
after cure	21
after curl	17
after cut out	9
after damp	12
after day	16
after daylight	21	-12
after days	27	-5
after dead	12			-8
after deal	7
after deck	23
after deep	21
after deliver	-9			-17		5
after delivery	-13	17
after dent				-12		5
after didn't		-12		14	10
after die		11
after different	20
after dig		9
after dime	-4		13
after dining room	9
after doesn't	9
after dont		8
after doorway	24
after drags	12
after dresser	24
after driveway	12
after drum	13
after drywall	35			-20
after duct	20
after dumpster	17
after dust	18
after dye	4
after each		-9		8
after early		22
after eat	5
after edge		5
after either	14
after electrician	20
after else		15		-12
after empty		14
after end	7
after ends	20			-17
after engineer	8
after enough	10
after enter	12
after entry	24
after epoxy	14
after even	10
after ever	26	-6		-6
after every	25
after everybody	15
after everything	18
after everywhere	25
after exam					13
after extra	-19		13
after eye	23			-13
after face	27
after factory	-16	23
after falling	11
after falls	19
after family room	-9	8
after far	-16			25
after far end	6
after fasten	22
after feed	9
after feel	12
after feet		6
after fell	-27	20		9
after fence			14
after figure	14
after finally	31
after fine	8
after finger	17
after fire	8
after fireplace				7
after first			5
after first coat	-16	-9	-14	30
after fit				16
after fix				16
after flat	14
after flicker	5
after flip	25
after float	14			-13
after flood test	10
after floor	17
after floor's	-14		20	-11
after floors	19
after flush	21
after foil				8
after foot	24
after fourth	25
after frame		16
after fray	19
after freeze	7
after front				5
after fronts	26			-16
after frost	-12	-14	-18	7	19
after gable	14
after garage			30	-12
after gas	-9			13
after gears	-4	15		-5
after give	-4			18
after glue				17
after god		5
after gonna		9
after good			10
after grade	6
after gray		-5	-6	23
after green				9
after grinder	19
after grout	25	-11
after grout line	7
after guest room	13
after gurgles	-6				18
after hair	23
after half	-18		21
after hall closet	25
after hallway	25			-12
after hammer	14
after hand			30
after hank	13
after happen		11
after hard	37
after hasn't		19	-14
after have far and	10
after have far comma			9	-26
after have far imperative		7
after have far owed		8
after have far past						7
after have far run-on	8
after have far word	20
after have here	12
after have here and	16
after have here comma	33	-10
after have here modal	18
after have here none		-11	30
after have here owed	14
after have here past	34
after have here run-on	6
after have here start	-22		20	-20
after have here stop	6
after have here word		-5	7
after have sentence comma			22
after have sentence imperative		24
after have sentence modal	-22	37
after have sentence none	-8	11	15	-20
after have sentence owed	14
after have sentence past	5
after have sentence run-on	5
after have sentence word		42
after haven't	-23	19
after he's	7
after head				14
after hearth	17
after heat				-5
after heater	-11	16
after here			21
after hers	-6			14
after high			12
after higher	8
after him	-4					17
after his		10
after hit	21
after hole	7
after holes	15
after hollow	29
after home	-27	6	30	-20
after hot				14
after house	5
after how				8
after hub		-8		12
after humidity		13
after hung up	18
after i'd	24			-8
after i've			12
after inch	-25	18	-12	8
after inside			9
after inspector	-17	14	8
after install	-5			24
after instead				-9		11
after into		-4		16
after its	22
after job	-16		10
after joint	-16		21
after joist bay	10
after kennels	-6				18
after kick	12
after kicks out				7
after kid			13
after kill	7
after kind	-12	20
after kink	-8			19
after kit		9
after know	24
after l	11
after lab	-4	18	-20
after label	-7		19
after lacquer	-4	17		-23
after ladder	29	-28
after lag	16
after lane	32			-14
after later			8
after latex	25		-13	-6
after laundry	16			-15
after law	11
after layers	5
after leak	5
after lean	-18	12
after leaning	-8	-5	22	-11		6
after least	17
after leave			8
after left end	9
after left hand	10
after leg	10
after length	17
after let	12
after let go	21
after lid		20		-5
after like	12
after lime	22	-15
after line	11		-4
after linen	7
after linen closet		11		-11
after lint	10
after lip				11
after list		19		-20
after lit	9
after lite		-13	12	-11
after little	-14		14
after live	31
after living room	-6			8
after lol	28
after long wall	14
after look	4
after lose	14
after lot			10	-8
after lounge	23
after lower		9
after luck	8
after lunch	24			-5
after machine	11
after main	23
after man				-5
after maple	15	-12
after mark	30
after mask	34		-20
after mat	24
after match		14
after mate	-9	21	-10	-16
after mattress	11
after maybe	5
after means	5
after meantime		7	-12
after measure	4
after meet	11
after mind	28	-8	-16
after mine	-18	21		-10
after minimum	28	-23
after minus				4
after miss		9
after miter	12
after moisture	8
after morning	7
after mount	-5			30
after movers	17
after mr	8
after mrs					10
after mud		16	-9	-25
after mud room	-9			16
after mush	-9		-7	19
after mushy	5
after my			17
after nail	6
after ne	28			-9
after near	26
after nearly	22
after need		21
after need far and	16
after need far copula	14
after need far modal	12
after need far owed	9
after need far run-on	14	-13
after need far word	32			-13
after need here comma		6
after need here copula	5
after need here none	-13	44		-18
after need here past	39			-5
after need here present		21
after need here run-on		6
after need here start	-29	36
after need here stop		9
after need sentence comma		29		-13
after need sentence imperative	24	-5
after need sentence modal	8
after need sentence none		57		-6
after need sentence owed	31	-17
after need sentence past	-10		13
after need sentence word	27
after needle	20			-10
after neighbor		8
after neutral	28	-10		-7
after new				16
after next	-10	21
after nice	-15	10
after nick	21
after night	13
after nobody	28
after none far and	5
after none far owed		8
after none far run-on	29
after none far word	16
after none here copula	15
after none here imperative		8
after none here modal	8
after none here stop	4
after none sentence modal		16
after none sentence stop		-14	-12		16
after north side	22
after notch		12
after nothing	16
after now				7
after nowhere				11
after number	-7			9
after nursery	32		-11	-8
after oak	10
after off center		-14	-4	10
after office	-28			11
after oil	12
after once	9
after ones	-21	34
after oot	22
after or	7
after order	-47				77
after other			6
after others	-8	-14		17
after ought				4
after oughta	15
after our				-14
after out of level	14
after outside	23
after outta		-12		8
after own	8
after owner		6
after p		15
after painted over	22
after painted shut	14
after painter		10
after pairs	26
after pantry				-13
after paper	7
after parking lot	16
after part	11
after part's	-18			26
after past	28
after patch	-5			19
after peel		15
after per	16
after pick	-10	22
after piece	11
after pieces	24		-18
after pile			6
after pin	23
after pine				6
after pipe	4
after pit	19
after plane				11
after plaster		11	-11
after plate		-25		17
after please	-13	39		-31
after plenty	-37	25	24	-16
after plumb		-9		21
after pocket			24	-8
after point	16
after pop		8
after popcorn	-15	-21	27	-17
after porch	15	-14
after pour	21
after powder				8
after powder room	-24		16
after pretty	-18			23
after profile	33	-29
after promise		7		-7
after proud	9
after pt	-18			21
after pull	11
after punky	12
after push	34
after put				16
after putty	-22		14	8
after quit	18			-7
after r	21
after rain	9
after rains		17	-10
after rake	-24	16
after rate	9
after rattle	8
after re	21
after reach		-16			21
after ready	11
after real	-8	-10	21
after rear	26
after reception	10
after red	-7		14
after redo	12
after rental	23			-4
after replace	-16			29
after require		17	-11	-19
after reset	-11		18	-7
after rest	-25	7	-21	17
after return	15
after returned far			9
after returned far comma	-8	23
after returned far copula	15
after returned far none	-9	12	6
after returned far owed	-19	10	10
after returned far past	-13	-6	14	-10	8
after returned far present		-6	6
after returned far stop			16
after returned here	8
after returned here and	13
after returned here past	18
after returned here start	20	-8
after returned sentence	-9			-20	14	20
after returned sentence and	-23				22
after returned sentence comma	-8	-36	-25	-35	9	34
after returned sentence copula	22
after returned sentence past	-8	-16	-14	-15	33
after returned sentence run-on		6
after ridge	-8	-26	6	11
after ring	9
after rise			4	-15
after road	13
after rocking				8
after rocks		-5
after rod		8	-9
after roll	-25	-7	23	13
after room	17
after rooms	-13	-7	13
after roots	17
after rotten	28
after rough	15
after rough opening's	-27			13		19
after round	30
after row	11
after rub	15
after ruiz	5
after rusted through	26
after s	-5	-20		16
after sag	13
after salon				8
after same				10
after sand	6	-5
after saw	14
after scrap	16	-8		-12
after scrape	33
after scratch	20	-17
after screed	11
after screen	12
after scribe			5
after seam	13
after seams		-8		15
after seat			14
after second	-6			27
after second coat	30	-4
after second floor		-5		15
after see		14
after seize	16
after send	-8	6
after set	13
after she		4
after shed	-33	17	15
after sheet	-20	7		12
after sheets		-7		13
after shim		12
after shoot	14
after short		15
after should	-15			19
after shut	4
after shy	27
after side	21
after sign	6
after signal's				7
after silicone	12
after silver	-7	23		-5
after site	-21		34	-35
after skip	31
after slab		5
after slam	13
after slide	15
after slope	26			-7
after slow	8
after small	19
after smell	22
after soft	19
after some		10
after somebody's	14
after somewhere	5
after soon	-10			14
after sorry	6		-5
after sort	23
after sound	23
after spare	-44	-24	47
after spill	5
after spin	5		-10
after spins	25
after spitting	10
after spoon	10
after spray	36
after spun	19			-17
after square				-4	8
after squeak	15
after stack				6
after stain		19
after stair		12
after stairwell	-24	-13	20	-16	17
after stand	-7
after staple	13
after start	20
after station	-28		16	14
after stay	4
after steam	5
after steps			17
after stick	14
after still			22
after stock	-33		13
after store	-12	-31	11	-24	8	8
after story	7
after strap				8
after street	30
after strike	11
after strip	14
after stub	-11			17
after stuck open	20
after study			16	-13
after stuff	-18	22
after sub	-18	-12	-11	26
after support	-11				20
after supposed					18
after sure	-17	22
after swap				15
after sweat		10		-5
after swell	13
after swing	-7					20
after tacky		-13	17	-15
after tae	22
after tag	-21	24
after talk		-5		9
after tank	17
after tap	25
after tape				17
after tell	-12			24
after template	24
after test	5
after than	9
after thank				7
after the kid	-13			18
after the kids		-12	-16	8
after the lady					17
after the wrong		7
after the yard		-16		-11	5	16
after their		-7
after then	5
after there's	-7	19		-10
after they're	27
after they've	16			-11
after thing					16
after think	9
after third coat	6
after this	12
after tho	9
after those		5
after thread		6
after through	8
after throw	4
after tie	18
after tight	15
after tighten	18
after til		9
after tile guy	-11	18
after tiler's	6
after tin	-15	-18	10	10
after toast	12
after toaster	17
after too big	27	-8		-13
after too deep	-9	19		-4
after too far	-8			12
after too high	32	-14		-5
after too long	-17	21
after too short	27
after top edge	-8	22		-14
after touch	32
after towards	9
after town	9
after trade	-9	23		-4
after trailer	-28	-35	23	8
after treat	12			-6
after trim	-15	17		4
after tube	34
after tubes	-9	20	-12	-11
after twice	13
after twist	15
after underneath	6
after unit	27
after units	17
after unopen	-24	-12	33	-19
after upside down	29			-6
after upstairs	29
after use				21
after used far and	28
after used far copula	11
after used far imperative		7
after used far modal	4
after used far owed		12
after used far run-on	26
after used here comma	-5	-9		31
after used here copula				12
after used here imperative				15
after used here modal		-15		11
after used here none	-10	-30		36
after used here owed		-16	9
after used here past	20
after used here start	18
after used here stop	5
after used sentence and				4
after used sentence imperative	-9
after used sentence none				12
after used sentence owed		7
after used sentence word		10
after utility	14	-17
after van	-45	-16	56
after vent		15
after very	14
after wait	27	-7
after walk	35
after walls	8
after walnut	-8	-9	17
after warp						16
after wash	8
after water's				11
after waterlog	26
after we	14
after weatherstrip	18
after weep	31
after weight	13	-10		-9
after well	8
after wet	22
after whenever	10
after where	18
after whistling				12
after white	-27	35
after whoever	7
after whole	4
after why		4
after wide	10
after width	-17			8		14
after wind				12
after winter	22
after within	18
after without	14
after won't						7
after won't latch	6
after wont	8
after work	27
after worst	12
after would		11
after wrap	-12			11
after wrong	7	-21	-14	-12		21
after x	-9
after yellow	14
after yep	13
after yet	-7
after you'd				6
after you're	-5	21
after your	10
again bought			24		-35
again have	20	5	-24
again need	70	-64	5	-26
again returned	-25	15		-7	23
again used			55	-68
ahead #		9
ahead &	-31	25		11
ahead '	29			-8
ahead )	28
ahead +	-4
ahead -	6
ahead /	6
ahead 1		5
ahead 3	-7			17
ahead @	37
ahead above	16
ahead acclimatising	19			-7
ahead add				5
ahead adjust	21
ahead again				5
ahead against	29
ahead ain't	5
ahead air	21
ahead alarm	26
ahead all				13
ahead almost			9
ahead am			4
ahead american	29	-12
ahead anchor	-8		17
ahead angle		-5		5
ahead any		10
ahead anybody	6
ahead anyhow	7
ahead anything	-8			15
ahead apartment	12
ahead are				11
ahead arm				9
ahead around	28
ahead as	13
ahead ask	11
ahead attic's	14		-19	-8
ahead b	29
ahead baby	18
ahead back wall	8
ahead backsplash		11
ahead bad	24	-9
ahead bag				-15
ahead balance		-5	11
ahead balcony		14
ahead ball	19			-14
ahead band		8
ahead bare	17
ahead basement	8
ahead basement bath	-15			22
ahead bath	32
ahead bathroom	12
ahead bc	26	-8
ahead bead		9
ahead beaut	4
ahead bed	21	-8
ahead bedroom	6
ahead bedroom 1				12
ahead bedroom 2	21
ahead before	7
ahead behind	5
ahead belly in	5
ahead below	16
ahead bend	29
ahead beside		7
ahead beto	13
ahead better	25	-13
ahead between	25
ahead big	11
ahead bin		18	-18	-8
ahead black				-19
ahead bled	18	-11	-8
ahead bless	13
ahead block				10
ahead board	-29	19
ahead boards	26
ahead bolt				14
ahead bond	-5	18
ahead bone	11
ahead book		-5	15
ahead bore	-14	-5		23
ahead borrow	18
ahead boss	9
ahead both	24			-9
ahead bowl	8
ahead boy	22			-5
ahead br		-17		9
ahead bracket				-21
ahead brass				5
ahead break		12
ahead bring		12
ahead bro	16
ahead brown				11
ahead bubble	4
ahead build		-5		5
ahead bulkhead	-18			21
ahead burn				20
ahead bury	9
ahead bust	4
ahead button				6
ahead c	8
ahead cab	-12		10	5
ahead came off	17
ahead cap	-9			21
ahead care	27	-4		-10
ahead carry		10
ahead ceiling's	10
ahead center	9
ahead chalk	20
ahead channel	21
ahead choose	11
ahead chrome	-18	24
ahead chuck		9
ahead chunk	6
ahead circuit	10
ahead clamp				11
ahead cleaner				8
ahead clearance	7
ahead client	35	-20
ahead clip		-5		7
ahead coat			11
ahead cock				6
ahead code	39	-29
ahead coffee	20			-11
ahead cold	19
ahead cold side's	28		-6
ahead color				6
ahead complete	19
ahead connect	20			-12
ahead contact	-6		16	-8
ahead contractor	5
ahead cope	25	-6
ahead corner	-7
ahead corridor	31			-19
ahead could	12			-19
ahead couldn't	12
ahead count			8
ahead counter	15
ahead crack	14
ahead crawl				9
ahead crosses		8
ahead crown	5			-10	10
ahead crumbling				7
ahead crush	14
ahead cure			-9	14
ahead customer	17
ahead cut out	25
ahead d	11
ahead dad	24	-15
ahead damp	22
ahead dark	14
ahead date		15		-21
ahead deck	12
ahead deep	33
ahead den		7		-15
ahead dense				4
ahead dent	15
ahead dial	16
ahead dig				6
ahead ding	19
ahead dip		11
ahead disconnect	31	-11		-14
ahead doesn't	14
ahead dog	9
ahead don't	6
ahead dont			5
ahead doubl	20			-9
ahead downstairs	15
ahead draft	7
ahead drain	10
ahead drill	17
ahead drip	16
ahead driveway	15
ahead drop	26
ahead drywall	4
ahead dump	-5			16
ahead each	31	-17
ahead early		-12		7
ahead ease	29
ahead eat				27
ahead edge				14
ahead edges	-19		9	13
ahead eggshell	-24	25
ahead either	23	-9
ahead electric	15
ahead electrician	10
ahead else	20
ahead em	19
ahead empty	15
ahead end	12
ahead enough			22
ahead ensuite	11
ahead entry	21	-13	-6
ahead epoxy	-5			6
ahead even		-9		8
ahead ever		6
ahead everything				8
ahead exam					12
ahead except	6
ahead exhaust	16
ahead exterior	15
ahead extra	8	-16	-20			12
ahead face	14
ahead falls	12
ahead falta		15	-9	-18
ahead far		-9				11
ahead feed	10
ahead feel	24
ahead fell	-4	21	-20	-17
ahead fella	9
ahead fence	-6	-8		16
ahead fifth	-5	-13		16
ahead figure		18
ahead file	16
ahead fill				17
ahead finally	13
ahead find	5
ahead finish				31
ahead fire	10
ahead first	-9
ahead first coat				6
ahead first fix	6
ahead fish	22
ahead fix		-13		5
ahead flap	8
ahead flaps	10
ahead flash	18
ahead flat		5
ahead flexible	-30	33
ahead float				6
ahead flood test	-10		17
ahead floor's	17
ahead flush	10	5		-15
ahead foam				26
ahead foil	-13		22
ahead fourth	15
ahead foyer	4
ahead framing's	20
ahead fre		-9	19	-19
ahead fresh	-17		13
ahead front				12
ahead front room	30			-15
ahead fronts	17			-6
ahead gable	24
ahead galvanize	9
ahead garage	20
ahead garbage	20
ahead gary	-7		18	-13
ahead gas				10
ahead girls	14
ahead god	4	-7
ahead golf	23
ahead good	8
ahead grab		6
ahead gray	-16		20
ahead green	-37	31
ahead grout	15	-12
ahead grunt	-12	-20	8	16
ahead guess		15
ahead guest room	5
ahead guy	29
ahead hairline crack	12
ahead half	-8	8	8
ahead hall	31
ahead hall closet	-20	-6	24	-13
ahead hand	7	-11
ahead happy	18
ahead hard	11	-17
ahead hardy	12
ahead hasn't	27	-13
ahead haul	15
ahead haven't	-5	22	-14	-8
ahead he'd	15
ahead he'll				-6
ahead he's	6
ahead headroom	7
ahead hearth	9	-15		4
ahead height	21			-9
ahead height's	16			-8
ahead hendersons	14
ahead here			16
ahead here's	13
ahead high	11
ahead higher		6
ahead him	-5	5	11	-8
ahead ho		11
ahead hole	6
ahead home	20
ahead homeowner	17
ahead honeycombing	4
ahead hook		-9		12
ahead how	-19		14
ahead hub	25
ahead husband	6
ahead i'd		34
ahead i'm		6
ahead i've			29
ahead inch	-24	31
ahead inside		9
ahead inspector	21
ahead install	-6			16
ahead instead	15			-7
ahead insulate	15
ahead isn't	16
ahead it'll			8
ahead itself	20
ahead jess	-6			12
ahead job	-8	-8		23
ahead joker	32			-25
ahead kick	15
ahead kill	13
ahead kind	15	-8
ahead kindly	-13	18
ahead kit				8
ahead knees	10
ahead knit	9
ahead knock	26
ahead know				7
ahead la	7
ahead label	9
ahead ladder	-5			10
ahead lady	27	-15		-15
ahead lady's	21
ahead lag		5
ahead lake						10
ahead land	19
ahead landlord	14
ahead laser	20	-18
ahead last	-20		19
ahead latch	24
ahead laundromat	28			-13
ahead laundry	30
ahead laundry room	13
ahead layer	-8	-10		10
ahead layers	10
ahead lead	6
ahead lean	18
ahead leaning	5
ahead least		7
ahead led		4
ahead left hand	9
ahead legs	-15	12	-11	7
ahead let go	27
ahead library				10
ahead lid	4	-5
ahead lid's	16
ahead lift	21
ahead line				9
ahead linen closet	-12			14
ahead lip				8
ahead list	28	-11
ahead listen	7
ahead lit	-5	-11		15
ahead little	21			-5
ahead living room	27
ahead load	14
ahead lock					7
ahead lol	8
ahead long		10
ahead longer		11
ahead look	18
ahead loop	16
ahead lord	20
ahead lose	5
ahead lot		-16				9
ahead low				6
ahead lower	10
ahead luis	33	-7	-6	-10
ahead machine	37	-21
ahead main	16
ahead man	23
ahead mark	12
ahead master	18
ahead match	14
ahead mate	-30	33	-6	-11
ahead maybe	-9		25
ahead me		14
ahead measure	10
ahead meet	19
ahead middle		9		-6
ahead mind	22
ahead miss		9
ahead moisture	18			-7
ahead moisture's	21
ahead mold	14
ahead more		5
ahead morning	14
ahead mortar	13
ahead mount	-12			23
ahead mouse	-12			17
ahead movement	14
ahead mr	8
ahead mrs	16
ahead muck	-9			14
ahead mud	-4	10
ahead mudd	13
ahead mudroom	6
ahead must	12			-6
ahead my	11
ahead n	6
ahead nah	13
ahead nail holes				11
ahead near	21
ahead nearly		-5		14
ahead need		13
ahead neighbor	30	-9	-19
ahead nest	-13			18
ahead new				4
ahead news	11
ahead next	16			-8
ahead niche	7
ahead nick	27
ahead nobody	26
ahead noon		10
ahead north wall	12
ahead not	10
ahead not even	4
ahead notch	14
ahead note	14
ahead nowhere		5	-4	-12
ahead number	5
ahead nursery	-15	-15	-8	29
ahead oak	-20	-16		29
ahead office	10
ahead oil	16			-4
ahead okafor	6
ahead okafor's				14
ahead old	16
ahead once	27
ahead one's	37
ahead ones	29
ahead opened up	18	-5
ahead opening's					10
ahead or			5
ahead order		17
ahead out of plumb	19
ahead outside	-5	9
ahead outta	31	-10
ahead owe	-7	21
ahead own	25
ahead owner	7
ahead p	-24			24
ahead pack	-10			21
ahead painted shut	16
ahead painter	26
ahead pantry				15
ahead paper	-11	21
ahead parlor	14
ahead part	19	-8		-10
ahead past	4
ahead patio	20
ahead patron	5
ahead pay	23			-9	-9
ahead peel	15
ahead phone	6
ahead pick					13
ahead piece	23
ahead pile	-8		16
ahead pin	-14	-8	6	13
ahead pipe		-4
ahead pitch	22
ahead place	-4			19
ahead plan	20
ahead plane	19
ahead plaster		10
ahead plenty	-7		24
ahead plumb	19			-7
ahead plus	-14		12
ahead pool	10
ahead pop	12
ahead porch	12
ahead pour	8	-7
ahead powder room	23
ahead pressure	5
ahead pressure treated		9
ahead proud of	10
ahead pull	25
ahead pump				13
ahead push	18
ahead put				8
ahead putty	20
ahead quit	14
ahead quote	19
ahead r	-8	20		-12
ahead rain	-13	-10	11			15
ahead raise	15
ahead rake	33	-18
ahead rate	17
ahead ray	20
ahead reach	11
ahead read	16
ahead ready	-12	17		-12
ahead rebuild	-23	-5		30
ahead red	18
ahead redo	-9			5
ahead rehang				7
ahead relay				6
ahead remains	22
ahead remind		-5	6
ahead rental	26
ahead repair	-28	-23		36
ahead replace	-13			19
ahead replacement	22			-4
ahead report	15
ahead require			12	-16
ahead rest	-41		25
ahead restroom	18
ahead return	-13			-21		22
ahead reveal	17
ahead reveal's	17	-6
ahead rick		7
ahead ridge	21	-11
ahead ring				15
ahead rink		11		-9
ahead rise	14
ahead rm	8
ahead rod		12		-12
ahead roof	21
ahead room	33
ahead roots	14
ahead rosa	4
ahead rot				6
ahead rotten		11		-15
ahead rough	14
ahead round	40
ahead row		-6
ahead rub	7
ahead rubber	-9	25		-23
ahead rudy	16
ahead run's	30
ahead runner	36	-17		-12
ahead s	14
ahead sag	12
ahead sage	-36	30	4	-20
ahead salon	16
ahead sample	11
ahead sand	17
ahead sander	-12	23		-11
ahead save	10	-7
ahead scrap	15
ahead scrape	24
ahead screed	28
ahead screen	9
ahead screwdriver	14
ahead scuff	11
ahead seal	7
ahead seam	4
ahead seat	12
ahead second	-12	16
ahead second coat	6			-9
ahead second floor's	-5			14
ahead send	-17					17
ahead setback	31	-23
ahead sewing room	-31	-34	36
ahead shave	18
ahead she'd	10
ahead she'll	7
ahead she's	7
ahead sheath	5	5		-10
ahead shed				11
ahead sheet	17
ahead ship	8		6	-14
ahead shoot			12	-8
ahead shop	-25	12				8
ahead short	-13	38
ahead shot	25			-8
ahead shove	-15	-11	23	-22
ahead show	11
ahead shut	12
ahead shy		14
ahead side	10
ahead sign			11
ahead silicone		-12			10
ahead sinking	-13			20
ahead sir	18
ahead size	17
ahead skim	11
ahead skirt				7
ahead slab	31			-12
ahead slab's	9
ahead slid	-32	-7		37
ahead slide	16
ahead slip	10	9	-19	-23
ahead slope	11
ahead smell	6
ahead snake	15
ahead snap	27
ahead snug		-4
ahead soft	-27	12				6
ahead soft close	19			-10
ahead soft spot	10
ahead some				-23
ahead somebody's	22
ahead something				13
ahead sorry	6
ahead sound	31
ahead spare		-11	20	-5
ahead special	29
ahead spend	-15	-12	-14	28
ahead spin	30	-5		-12
ahead spins	5		6	-12
ahead splash	28			-4
ahead splice	13
ahead split	4
ahead spray	6
ahead squeak	-10			18
ahead stack	-4	-27	6	9
ahead stagger	-9			15
ahead stain	9
ahead stairs	-8			15
ahead stairwell	24
ahead staple	22	8	-10	-31
ahead start	16
ahead static	20
ahead stay		-11	25
ahead steam	-10			17
ahead step				13
ahead steps	41	-14		-8
ahead stock	-10	-12	20
ahead stop		19
ahead store	-27	12	-20	-23	18
ahead straighten	19
ahead strap	-7			4
ahead street	7	-9		-8	14
ahead strike		15
ahead strong	6
ahead stub		-6		13
ahead stuff	-5
ahead super	21
ahead supplier	-9	4	12
ahead supply		6		-8
ahead supposed		7
ahead sure	5
ahead swap				14
ahead swear	17
ahead sweat	19
ahead sweep	26	-10	-7
ahead sweet	19
ahead swing		13
ahead system	11
ahead t	8
ahead tack	11
ahead tae	17
ahead tag				8
ahead take						6
ahead talk	19
ahead tank's	19
ahead tap	6
ahead tape	5
ahead tell	5
ahead temp	28
ahead template	12
ahead tenant	22
ahead test	6
ahead that'll	-14	8	-24	-30	20
ahead the kid	6
ahead the lab	13
ahead the lady	-6		8
ahead the lady's	27
ahead the wrong	10
ahead the yard	12
ahead they	26
ahead they're	12
ahead they've		-6	8
ahead thick	-6		-9	26
ahead thing	7	-4
ahead things	15
ahead third		-10
ahead though	-8	-12			13	17
ahead through				5
ahead tie	17	-20
ahead tight	26
ahead tighten	7
ahead til	-13	17
ahead tile guy	-10	15
ahead time	-17		7
ahead together				6
ahead tony	-25	-6	20	7
ahead too	4
ahead too long	15
ahead top	15
ahead touch	7
ahead touch up	21
ahead toward	16
ahead traffic	14
ahead trim		7
ahead trip	22	-8
ahead truck	6
ahead try			6
ahead tube	-19			23
ahead tubes		11
ahead twice	11
ahead u	23
ahead undercut	26
ahead underneath	6
ahead understand	20			-8
ahead unit		-7				16
ahead upper				8
ahead upstairs	19
ahead us		18
ahead use				19
ahead van	-20	-10	29	-13
ahead vent	-8			10
ahead wad	4
ahead walk					12
ahead wall's	16
ahead walls	15
ahead walnut	27			-5
ahead wash	17
ahead waste	23
ahead water proof	-16		19
ahead water's	7
ahead wax		10
ahead way	6
ahead we'd	-22	29
ahead we'll	-10	23
ahead we're			5
ahead we've		-23	21	-11
ahead weatherstrip	24	-20
ahead weight	31
ahead weld		-17	19	-11
ahead were	38
ahead wet	12
ahead when	12
ahead white	-27	22	15	-11
ahead whitlock's	27			-13
ahead who	19
ahead whoever	20
ahead why	10
ahead wide	8
ahead will		16
ahead wind		17		-18
ahead wipe	17
ahead wire	24
ahead within	25
ahead without	-29	28	11
ahead wobble	5
ahead wont	17
ahead work			9
ahead wrong	22
ahead wrote	16
ahead x		16
ahead ya				13
ahead you	16
ahead you're		17			-12
ahead your	21
any	198	-87	-137	-82	-287	-302
area after none far	38			-32
area after none sentence	15
area before it need	-25	31		-24
area before it used			-4	11
area behind it have		-8	-18	7
area behind it need	-11	11		4
area behind it used		-10		21
area beside is				8
area beside nothing	-8	-12	-12	30
area beside other b other	-4	16		-20
area beside undefined is other				8
area beside work b other	-14			20
area cue need	-19	25
area cue used				13
area flawed	19
area left ,	-5	-6		25
area left about	45			-27
area name flawed	-10	-6		20
area named before material				8
area null none no		-6		9
area right ,	-26			37
area right .	-9	18
area right and	-7	5		5
area says none no		-6		9
area says past before	-5	-10	-15	16
area says past behind		-15		10
area says present behind	30			-20
area sold so false				12
area sold so true	-7	15
area then work pp	-8			16
area verb null no		-6		9
area whole clause	-21	-5		35
bare after bought far	7
bare after bought here	13
bare after bought sentence	29
bare after have far	7
bare after returned here	10
bare after used here	10
bare before it ate						19
bare before it bought	10
bare behind it ate	12
bare behind it back	5
bare behind it bought	8
bare behind it lacks	5
bare beside add	31			-6
bare beside adjust	8
bare beside am	25
bare beside bag	15
bare beside bend	25
bare beside bleed	4
bare beside block	12
bare beside blow	13
bare beside book	14
bare beside borrow	18
bare beside bow	9
bare beside box				5
bare beside bring	-14	19
bare beside bubble	5
bare beside burn	13
bare beside butter	17
bare beside button	4
bare beside buy	63	-42
bare beside buy b nobody	5
bare beside buy b other	21
bare beside buy b person	-7	19
bare beside buy i person	7
bare beside buy pp nobody	6
bare beside buy pp other	36	-10
bare beside buy pp person	17	-4
bare beside buzz	13
bare beside call	4
bare beside can	12
bare beside can't	5
bare beside cap	-11			19
bare beside carry	16
bare beside caulk	17
bare beside check	10
bare beside choose	9
bare beside clean	5
bare beside clear	19
bare beside clip	18
bare beside clog	21
bare beside coat	15
bare beside come	4
bare beside complete	22
bare beside crook	16
bare beside crush	7
bare beside cut	10
bare beside didn't	14
bare beside die	10
bare beside ding	10
bare beside doesn't	7
bare beside don't	9
bare beside drip	18
bare beside drive	18			-8
bare beside drop	8
bare beside dry	14
bare beside duct	13
bare beside dump	26
bare beside eat	39			-4
bare beside empty	25
bare beside feed	17
bare beside figure	17
bare beside file	14
bare beside fit	8
bare beside fix	30
bare beside flash	11
bare beside flip	19
bare beside forget	18
bare beside frame	13
bare beside fre	22
bare beside get	14
bare beside give	30
bare beside go	10
bare beside grab	33	-22
bare beside grind	19
bare beside grout	-15			20
bare beside guess	25	-12
bare beside hang	8
bare beside happen	7
bare beside has	12
bare beside haul	12
bare beside have	8
bare beside have b nobody	32		-14
bare beside have i person	18
bare beside he'll	5
bare beside head	21
bare beside hold	4
bare beside hook	11
bare beside hum	9
bare beside i'll	10
bare beside i've	-7	21	-24
bare beside install	21
bare beside insulate	6
bare beside is	10
bare beside isn't	20
bare beside keep	8
bare beside kick	5
bare beside label	21
bare beside land	-8	20
bare beside lay	40
bare beside leave	15
bare beside like	9
bare beside mark	5
bare beside match	17
bare beside measure bp person	10
bare beside measure i person	9
bare beside measure pp person	7
bare beside measure s person	8
bare beside miss	13
bare beside mount	17
bare beside move b nobody		14
bare beside move i other	15
bare beside move p nobody	12
bare beside move p other	42
bare beside move p person	28
bare beside move pp nobody	20
bare beside move pp other	23
bare beside move pp person	7
bare beside move s other	21
bare beside nail				11
bare beside need b nobody	4
bare beside need b other	4
bare beside need pp other	15
bare beside need s nobody		11
bare beside need s other	9
bare beside oil	21
bare beside open	12
bare beside order		18
bare beside other b person	23
bare beside other i person	7
bare beside other p nobody						18
bare beside other pp nobody					6
bare beside other pp other	15
bare beside other s person	11
bare beside own	17
bare beside pack	-12			12
bare beside patch				8
bare beside phone	8
bare beside pick	6	-19			9
bare beside pitch	14
bare beside place	36
bare beside plane	13
bare beside plug				13
bare beside point	11
bare beside pop	18
bare beside pour		7
bare beside prime				8
bare beside quote	15
bare beside rack	11
bare beside rake				10
bare beside redo	24
bare beside reglue	17
bare beside rehang	21			-6
bare beside repair	-7			15
bare beside replace	-10			17
bare beside reroute	5
bare beside return	-31		29			15
bare beside reverse	5
bare beside ring	11
bare beside rock	21
bare beside rot	18
bare beside rub	7
bare beside run	8
bare beside sand	-20					8
bare beside save	-5		16
bare beside say b nobody	13
bare beside say b other	10
bare beside say b person	23
bare beside say pp other	12
bare beside say s person	24
bare beside scratch			4
bare beside screw	43
bare beside scribe		9
bare beside see b nobody	8
bare beside see b person	6
bare beside see s other	6
bare beside send	22
bare beside set	12
bare beside shave	16
bare beside shim	10
bare beside ship	17
bare beside short	7
bare beside should	26
bare beside show	19
bare beside shut	10
bare beside sign	-16		22
bare beside sister		-8		5
bare beside size	14
bare beside skim	7
bare beside smell	7
bare beside snake	5
bare beside snap	7
bare beside snug	9
bare beside sort	15
bare beside sound	17
bare beside square	14
bare beside squeak	13
bare beside stack	35			-20
bare beside stand	15
bare beside stay	30
bare beside stick	40
bare beside stop		4
bare beside straighten	23
bare beside stretch	15
bare beside strip	22
bare beside supply		13
bare beside swap	12
bare beside tack	10
bare beside take						19
bare beside tape	32
bare beside tell	6
bare beside text	10
bare beside think	18
bare beside throw	37	-9
bare beside tie	15
bare beside top	6
bare beside touch	5
bare beside trace	16
bare beside trim	16
bare beside turn	21
bare beside undefined has person	9
bare beside undefined is nobody	16
bare beside undefined is other	6
bare beside undefined will nobody	20
bare beside undefined will person	7
bare beside use	25
bare beside use b other	11
bare beside use b person	24			-8
bare beside use pp nobody	16			-7
bare beside use pp other	9
bare beside use pp person	24			-7
bare beside wait	9
bare beside walk	22
bare beside want	6
bare beside wash	6
bare beside will	9
bare beside wipe	7
bare beside wire	8
bare beside won't	11
bare beside wont	17
bare beside work	5
bare beside work b nobody	43
bare beside work bp other	6
bare beside work bpp nobody	17
bare beside work i nobody	13
bare beside work i person	30
bare beside work p nobody	37
bare beside work p other	7
bare beside work pp person	10
bare beside work s nobody	14
bare beside wouldn't	4
bare beside wrap	5
bare buy imperative behind	-4	16
bare buy owed before	-22	28		-8
bare buy owed behind	11
bare buy past behind	13	-11			6
bare buy present behind	31	-23
bare cue bought	5
bare have imperative behind	6
bare left 
	22
bare left #	15
bare left &	-7	6
bare left '	9
bare left (	12	-12			8
bare left *			14
bare left ,	14
bare left -	15
bare left /	17
bare left ;	10
bare left ?	14
bare left @	6
bare left G	6
bare left T	22
bare left a	7
bare left about	32
bare left above	5
bare left across	7
bare left adjust	7
bare left after	25
bare left again	8
bare left against	19
bare left all	42			-9
bare left along	12
bare left already	28
bare left alright	7
bare left also		8
bare left anyway	7
bare left are	7
bare left around	7
bare left as	7
bare left attic	16
bare left away	13
bare left bad	12
bare left bakery	5
bare left balcony	12
bare left bare	15
bare left bath	10
bare left bathroom	9
bare left be	26
bare left bedroom	10
bare left before	17
bare left behind	13
bare left below	5
bare left bend	7
bare left beside	16
bare left blow	14
bare left boss	5
bare left bottom	9
bare left box	12
bare left break	20
bare left bring						7
bare left buy	39	-26
bare left c	9
bare left can't	5
bare left caulk	9
bare left change				5
bare left chip	-10			16
bare left choose	9
bare left clean	13
bare left clear	10
bare left closet	18
bare left come					12
bare left crack	-14	6		6
bare left dead	12
bare left deep	7
bare left den	7
bare left dining room	9
bare left do	25
bare left down	18
bare left drop	9
bare left each	11
bare left eat	11
bare left end	15
bare left enough	14
bare left entry	5
bare left every				9
bare left except						21
bare left feed	9
bare left fill	5
bare left fine	14
bare left finish	13
bare left first	16
bare left fit				12
bare left floor			11
bare left for	29
bare left get			5
bare left glue	11
bare left good	13
bare left gotta	6
bare left half	-11	-4	19
bare left hall	6
bare left hall bath			14
bare left hallway	13
bare left has	17
bare left haul	12
bare left have	20
bare left he	10
bare left hi	9
bare left hit	4
bare left house	13
bare left how	11
bare left i	9
bare left i'm	29	-7
bare left if	13
bare left in	8
bare left inside	31	-8
bare left into	5
bare left is	5
bare left it	25
bare left it's	5
bare left job				10
bare left just	32
bare left keep	6
bare left kill	4
bare left know	7
bare left last				5
bare left laundry	10
bare left lay	40
bare left leave	5
bare left lift	8
bare left like	6
bare left long	6
bare left loose	18
bare left make	7
bare left man	8
bare left master	4
bare left master bath	8
bare left maybe	9
bare left me	18
bare left measure	4
bare left meet	8
bare left miss	41
bare left mudroom	6
bare left n	14
bare left near	8
bare left need	7
bare left nobody	9
bare left not	4
bare left office	9
bare left ok	4
bare left on	20
bare left once	6
bare left only	38
bare left open	23
bare left or	25
bare left order	-4	17
bare left out	26
bare left outta	12
bare left owe	23	-4
bare left pack	38			-14
bare left paint	14
bare left pantry	22
bare left patch	14
bare left pick	20
bare left plane	7
bare left plug	11
bare left porch	12
bare left prime	-15			19
bare left pull	7
bare left push	6
bare left replace	-8	-6		15
bare left right	-5	14
bare left ring	14
bare left roll	7
bare left round	6
bare left sand	-5					19
bare left scratch			13
bare left screw	25
bare left seal	12
bare left send	32
bare left she	11
bare left shut	5
bare left side	5
bare left sign	-19		24
bare left since	7
bare left sit		12
bare left snap	8
bare left snug	11
bare left so	38
bare left sort	17
bare left split	10
bare left start	6
bare left stick	18
bare left strip	22
bare left swap				6
bare left take	-16			-12		40
bare left tape	4
bare left test	6
bare left than	9
bare left that's	36
bare left the	23
bare left the wrong	10
bare left them	14
bare left there	35
bare left there's	23
bare left thing	16
bare left think	8
bare left third	12
bare left through	32
bare left tile	19
bare left time	17
bare left too		13
bare left top		4
bare left touch	7
bare left trim	15
bare left truck	8
bare left turn	11
bare left until	19
bare left us	16
bare left use	6
bare left we	15
bare left we're	26	-10
bare left well	18
bare left wet	6
bare left where	10
bare left which	13
bare left why	9
bare left will	5
bare left without		15
bare left won't	7
bare left wrap	13
bare left your	14
bare left •					16
bare list have	38
bare list need		8
bare list used	30			-19
bare measure imperative behind					9
bare measure modal before	-6					20
bare measure modal behind	-6	17
bare measure owed behind	10
bare measure past before			6
bare more	-4	6
bare move modal before	17
bare move owed before	-13		26
bare move past behind	25
bare move present before	18
bare move present behind	13
bare named here area	29
bare named here defect	19
bare named here finish	5
bare named here role	24
bare named here surface	8
bare named here word	19
bare named here work	21
bare nameless	34
bare need modal before	21
bare need modal behind	7
bare need owed before	9
bare need owed behind	5
bare need past before		13
bare need past behind	16
bare null copula before	5
bare null modal before	24
bare null owed before	16
bare null owed behind	10
bare null present behind	19
bare other imperative behind	11
bare other modal before	4
bare other modal behind	12
bare other owed before	4
bare other owed behind	32
bare other present behind	7
bare right 
	20
bare right !	13
bare right #	5
bare right &		21		-9
bare right '	12
bare right (	-12	-14				21
bare right )					7
bare right +		4
bare right ,	10
bare right .	5
bare right ;	7
bare right =	11
bare right ?	15
bare right @	45
bare right N	11
bare right Q	29
bare right T	34
bare right a	13
bare right across	10
bare right ain't	11
bare right all	14
bare right along	19
bare right already			12
bare right also		11
bare right another	15
bare right are	14
bare right aren't		9
bare right arrive	36
bare right ask	4
bare right at	10
bare right back						12
bare right because	8
bare right behind	31
bare right between	5
bare right bind	10
bare right bolt	26
bare right both				9
bare right box	30			-10
bare right break	31
bare right bring	36	-5
bare right bubble	7
bare right burn	10
bare right but	19
bare right by	9
bare right can't	26
bare right caulk	13
bare right chew	13
bare right clean	11
bare right close	9
bare right crush	8
bare right didn't	24
bare right down	36
bare right drill	7
bare right drip	4
bare right drop	7
bare right dry	20
bare right dump	9
bare right every	17
bare right finish	28
bare right fit				6
bare right fix				11
bare right flush	15			-5
bare right glue		-4
bare right go	18
bare right gonna	21
bare right good	23
bare right hasn't	-6	16
bare right have	4
bare right he's	16
bare right head				13
bare right here	-7		20
bare right him	12
bare right hold	18
bare right hook	7
bare right i'd	13
bare right i've			9
bare right if	6
bare right just	15
bare right keep	6
bare right land	17
bare right lay	19
bare right leak	8
bare right let	7
bare right lift	10
bare right loose	21
bare right lose	11
bare right make	22
bare right me	20
bare right miss	6
bare right mount	7
bare right move	5
bare right my	14
bare right need	5
bare right never				12
bare right next		12
bare right no	11
bare right nobody	-25		16	13
bare right not	9
bare right nothing	10
bare right of	41
bare right off	16
bare right oh	16
bare right ok	11
bare right okay	9
bare right only	14
bare right open	6
bare right or	16
bare right out	22
bare right over	34
bare right peel	-6	16
bare right rattle	9
bare right read	6
bare right return	5
bare right right	14
bare right rip	13
bare right roll	-17		23	-14
bare right rough	6
bare right run	19
bare right rust	6
bare right say	17
bare right screw	27
bare right send	21
bare right set	13
bare right she		5
bare right she's	9
bare right shim	10
bare right short	34	-7
bare right shot	-13	18
bare right show						4
bare right since	6
bare right sit	13
bare right so	9
bare right some	9
bare right somebody	11
bare right squeak	6
bare right stay	26
bare right stretch	18
bare right strip	12
bare right stuff				12
bare right swap	9
bare right take	18
bare right tape			15	-7
bare right tell		8
bare right test	15
bare right than	17
bare right the	25
bare right them	8
bare right there's	16
bare right they're	29
bare right this	8
bare right those	6
bare right til	14
bare right top	15
bare right toward	6
bare right turn	15
bare right under	29
bare right up	25
bare right want	4
bare right we			12
bare right we're		-9	9
bare right were	27
bare right what	12
bare right when	27
bare right where	20
bare right while	5
bare right will	23
bare right wire	18
bare right without	5
bare right wobble	20
bare right won't						15
bare right wont	6
bare right work	7
bare right wouldn't	6
bare right you	6
bare say imperative behind	29
bare say modal before	9
bare say owed behind	6
bare say past before	19
bare say past behind	11
bare say present before	12
bare says copula behind	4
bare says imperative before	11
bare says imperative behind not	20
bare says modal before	21
bare says modal before not	5
bare says none no not	16
bare says owed before not		10
bare says owed behind not	33
bare says past before not	15
bare says present before not	13
bare says present behind	7
bare see imperative behind	17
bare see modal behind				8
bare see past before	13
bare see past behind			5
bare see present before	5
bare then buy b		-27			24
bare then buy pp					5
bare then have b			4
bare then have pp	23
bare then measure b	9
bare then measure bp	31
bare then measure i	7
bare then move b	12
bare then move p	6
bare then move pp	7
bare then move s	8
bare then need pp	12
bare then need s	7
bare then other bpp	5
bare then return b	13
bare then return s	5
bare then say b	7
bare then say s	15
bare then see pp	10
bare then see s	15
bare then use b				9
bare then use pp	22
bare then work bp	12
bare then work i	13
bare then work pp	4
bare then work s	17
bare use past behind			6
bare use present behind	34			-20
bare verb add behind	32			-6
bare verb adjust before	18
bare verb arrive before	41
bare verb back before	12
bare verb bind before	7
bare verb blow before	13
bare verb blow behind	17
bare verb bore behind				4
bare verb box before	-13	21		-15
bare verb box behind	10
bare verb break behind	29
bare verb bring before	-6	-5	18
bare verb bring behind	-4	8				8
bare verb build before	5
bare verb burn before	7
bare verb buy behind	11
bare verb buzz before	4
bare verb call behind	8
bare verb can behind	16
bare verb cap behind	22
bare verb catch before	12
bare verb change before				17
bare verb change behind	11
bare verb check before	7
bare verb chip behind	5
bare verb clean before	11
bare verb clean behind	10
bare verb clear behind	6
bare verb clip behind	18
bare verb close before	7
bare verb close behind	19
bare verb count behind	19
bare verb cover behind	8
bare verb crack before	-17	13		7
bare verb crack behind	17
bare verb cup before	9
bare verb cut before	-4	12
bare verb deliver before			12
bare verb dig behind	13
bare verb do before	20
bare verb don't before	17
bare verb don't behind	8
bare verb drain before	4
bare verb drill before	11
bare verb drill behind	20
bare verb drive behind	22			-6
bare verb dry before	-8		19
bare verb dump before	27	-7
bare verb ease behind	6
bare verb end behind	14
bare verb figure behind	23
bare verb file behind	13
bare verb fill before	7
bare verb finish before	22
bare verb finish behind	8
bare verb fit behind				10
bare verb fix before				4
bare verb fix behind	19
bare verb flush before	7
bare verb flush behind	12
bare verb forget behind	8
bare verb frame before	14
bare verb frame behind	12
bare verb fray before	10
bare verb fre behind	24
bare verb freeze before	6
bare verb give before	18
bare verb give behind	15
bare verb glue before	8
bare verb glue behind	26
bare verb go behind	5
bare verb gonna before	20
bare verb grind behind	13
bare verb grout before	18
bare verb guess behind	27	-15
bare verb hang before				6
bare verb hang behind	5
bare verb hold before	11
bare verb i'll behind	20
bare verb keep behind	15
bare verb know behind				9
bare verb land before	25
bare verb latch before	7
bare verb lay before	32	-15
bare verb lay behind	45
bare verb leak before	12
bare verb leave behind	7
bare verb level behind	-7			16
bare verb lift before	11
bare verb lift behind	8
bare verb like behind	24
bare verb listen behind	7
bare verb make before	18
bare verb miss before	15
bare verb miss behind	26
bare verb move before	6
bare verb mud before	15
bare verb nail before	9
bare verb nail behind	10
bare verb need behind	8
bare verb null before	5
bare verb open before	6
bare verb open behind	18
bare verb order before		13
bare verb order behind	-5	18
bare verb paint before	11
bare verb pass before	11
bare verb patch before	-17			21
bare verb patch behind	22
bare verb pick behind		-7			14
bare verb place behind	46			-24
bare verb plane behind	8
bare verb plug before	6
bare verb plug behind				13
bare verb pour behind	-11	16
bare verb prime behind				11
bare verb put before	18
bare verb put behind	14
bare verb rattle before	8
bare verb read before	9
bare verb redo behind	29
bare verb remind behind	21	-6
bare verb replace before				8
bare verb replace behind	13
bare verb reset behind	19
bare verb return before	9
bare verb rip behind			6
bare verb roll behind	8
bare verb rough before	6
bare verb run before	13
bare verb sand behind	11
bare verb save behind	-5		16
bare verb say before	14
bare verb screw before	24
bare verb screw behind	33
bare verb scribe before	23
bare verb scribe behind	11
bare verb seal before	25
bare verb seat before	12
bare verb send before	-11	12	8
bare verb set behind	13
bare verb shim before	13
bare verb show before	-14		16			5
bare verb show behind	7
bare verb sign behind	12
bare verb silicone before	21
bare verb silicone behind	13
bare verb sister behind	-5			23
bare verb sit before						14
bare verb snap before	6
bare verb snap behind	7
bare verb snug behind	7
bare verb split behind				8
bare verb squeak before	9
bare verb stain before		10
bare verb stain behind	14
bare verb stand before	20
bare verb stand behind	13
bare verb stay before	7
bare verb stay behind	22
bare verb stick behind	18
bare verb stop behind	28
bare verb straighten behind	19
bare verb strip before	9
bare verb stuff behind	-12	6		6
bare verb supposed before	20
bare verb swap behind	15
bare verb swing behind		12
bare verb tack behind	11
bare verb take before	22
bare verb take behind	-6					30
bare verb tape behind	14
bare verb tell behind	10
bare verb think before	8
bare verb throw behind	28
bare verb tie before	11
bare verb tie behind	12
bare verb tighten behind	8
bare verb touch before	5
bare verb touch behind	6
bare verb trim before	14
bare verb trim behind	19
bare verb trip before	8
bare verb turn before	10
bare verb walk behind	23
bare verb want before	6
bare verb will behind	9
bare verb wire before	23
bare verb wobble before	18
bare verb work before	11
bare verb work behind	6
bare work imperative before	12
bare work imperative behind	6
bare work modal before	21
bare work modal behind	12
bare work owed before	5
bare work past before	13
bare work present before	17
bare work present behind	5
before it ate				10
before it bought	-11			-16	53
before it need		18
behind it bought	-19
beside add				16
beside add Q	-12			18
beside add b other		4		-17
beside add pp nobody	-37	-16	-7	40
beside adjust	26
beside ain't	19
beside ain't is other	19
beside am		-11	20	-19
beside am is person	15
beside anchor	15
beside anchor pp other	15
beside are Q	47			-8
beside are all	-4		8
beside are down	25			-16
beside are in				23
beside are is person	23
beside are on	-6	-5		22
beside are up	-16		5	14
beside arrive	-15		27	-20
beside arrive pp other	-19		28	-23
beside ask b other		9
beside ask for	7
beside ask the		13
beside bag	22			-13
beside bag b other	12
beside balance	-26		17	6
beside be G	10			-6
beside be Q	5
beside be a	-14
beside be b person		13		-8
beside be back	-10	25		-15
beside be cut out	7
beside be here	18
beside be in	16
beside be no	11
beside be off	5
beside be on	5
beside be out	17
beside be p nobody	21
beside be p other	5
beside be p person	13
beside be painted shut	7
beside be there	10
beside be under	21
beside be up	13
beside bead		11
beside bead b other		11
beside bed	4		-6	5
beside bed pp other	4		-6	5
beside bend		14
beside bend ,		10
beside bend b other	19
beside bend pp other	-17	29
beside bleed	4
beside bleed i other	7
beside block	12
beside block pp other	12
beside blow	17
beside blow Q		-10	-4	20
beside blow i other	16
beside blow p other			-5	11
beside blow p person	13	-15	-8
beside blow s other	7
beside bolt	-8	-5		26
beside bolt pp other	-13	-5		28
beside book		9
beside bore		-11		6
beside borrow		17		-17
beside borrow pp person		19		-19
beside bow	9
beside bow pp other	11
beside box	-9	10
beside box and		19	-22	-23
beside box b other	-9	20
beside box in	-6	-17	19	-5
beside break ,	14
beside break in	18
beside break p other				-14
beside break the	17
beside bring	-6	31
beside bring G	-26	33
beside bring Q	-10	26
beside bring b nobody	-7	29
beside bring b other	-17	31
beside bring b person	4
beside bring back	-15		6			17
beside bring i other	7		-5
beside bring it	11	-22	11
beside bring me	-30	38
beside bring pp person	-33	-31	-20	-20		45
beside bring the		-12				11
beside bubble	5
beside bubble b other	7
beside build				8
beside burn				18
beside burn Q	-21	-9		32
beside burn b other	16
beside burn pp other	5
beside burn pp person	-29			35
beside burn through	-14			10
beside burn up				18
beside bury	9
beside bury pp other	6
beside butter	-12	20		-6
beside butter b other	-12	20		-6
beside button		-5	-4	17
beside button pp other		-5	-4	17
beside button up		-5	-4	17
beside buy					4
beside buy :		25		-13
beside buy G	6	4	-9
beside buy Q		8
beside buy a	-13	-12		-9	6	15
beside buy b nobody		23
beside buy b other		25
beside buy b person	-10			-10	41
beside buy i person	-7	27
beside buy pp nobody		-38	-7	-9	42
beside buy pp other	-30	-6		-15	13	26
beside buy pp person	-31	-29			46
beside buzz				13
beside call	8
beside call b other	18
beside call for		15
beside call him	20
beside call i person	16
beside call me	8
beside call pp other	-10			16
beside call s other		14
beside can G		-10		7
beside can will other			-8	18
beside can will person	4
beside can't	11
beside can't will person	8
beside cap	-26	-5		33
beside cap pp person	19
beside carry	16
beside catch	4
beside caulk	17
beside change				26
beside change Q		5
beside change b other	17			-28
beside change b person	-27			42
beside change pp nobody	-15			25
beside change pp other				-5
beside change the	-6	-13		31
beside check	24
beside check b other	12
beside check b person	4
beside check it	9
beside check pp nobody	14
beside check s other	21
beside chip on	15
beside chip pp other	27
beside chip s other	-24			31
beside chip the	9
beside choose	11
beside clean G	17
beside clean b person	14
beside clean it	-8			18
beside clean pp other	-13			22
beside clean pp person	23
beside clean the	13
beside clean with	18
beside clear and	-23	5	18
beside clear pp other	13
beside clear s other	15
beside clear the	18
beside clip	7
beside clip pp other				8
beside clog	21
beside close	19
beside close b other	26
beside close b person	29
beside close with				7
beside come ,	20	-20	7	-24
beside come Q		-4	10
beside come T	-5	-16	-7	-4	35
beside come back		9
beside come bp other	9
beside come bp person			17
beside come down	12		-16
beside come for	-17		23	-15
beside come from	13
beside come i other	7
beside come i person	18
beside come in	13		7	-5
beside come out	9
beside come p other			5
beside come s other	-6		-9	-13	31
beside come s person	7
beside come the	-12				19
beside come to	-21	-11	-15	31
beside come up	31
beside come with	35	-12		-6
beside come without	-15	22
beside complete	-14			14		10
beside complete b other						14
beside consum		-21	-21	26
beside consum :		-19	-18	27
beside consum pp nobody		-19	-18	27
beside cope	21
beside count	-15	8	22	-23
beside count Q	-18	8	21	-21
beside count b person		11	-24
beside count pp person	-12		20	-18
beside cover	18
beside cover Q		-16	16
beside cover b other	6
beside cover s other		-17	17	-7
beside crack from	9
beside crack pp other	15
beside crack pp person	-34	13		28
beside crack the		13
beside crook	20
beside crook pp other	20
beside crush	19
beside crush pp other	19
beside cup	11
beside cut a	-6			20
beside cut at	13
beside cut bpp nobody				5
beside cut bpp person	13
beside cut in				12
beside cut it				5
beside cut s other	23			-11
beside cut that	25			-16
beside cut the	30
beside cut through	20
beside date	25			-14
beside date Q	22			-14
beside deliver	-9	-25	14
beside deliver pp other	-14	-25	15
beside dial	22			-8
beside didn't	16
beside didn't drop	8
beside didn't will other	16
beside die	10
beside die b nobody	14
beside dig	32
beside dig Q	4
beside dig pp other	32
beside ding	17
beside ding pp person	11
beside ding the	11
beside do ,			-19
beside do :	23
beside do Q	-16	-24	-6	34
beside do T	-6	-38	-31	-38	-6	38
beside do a	-5	12
beside do all	25
beside do and				-17		15
beside do i other	-13	19
beside do i person			11
beside do it	-12	15
beside do on				5
beside do p nobody	21			-9
beside do p other		-8		4		8
beside do s other	8
beside do s person	4
beside do that			7
beside doesn't	7
beside doesn't G	5
beside doesn't will other	7
beside don't	14
beside don't will other	14
beside doubl	22			-14
beside doubl pp other	22			-14
beside draw	24	-12
beside drill Q	21			-10
beside drill at	7
beside drill pp nobody		-9		11
beside drill pp other	16
beside drip	11
beside drip ,				7
beside drip G	21
beside drip b other	6
beside drip from	23
beside drip on		6		-10
beside drip pp other	4
beside drip s other	7
beside drive				8
beside drive Q				13
beside drive p other				-16	18
beside drive p person	-11			24
beside drop	6
beside drop Q			16
beside drop pp other	22
beside drop pp person			14	-8
beside dry	14
beside dry ,	6
beside dry b other	15
beside dry pp other	5
beside duct	13
beside duct pp other	11
beside dump i other				10
beside dump right	8
beside dump s other	8
beside ease	15
beside eat				20
beside eat Q	-32	-15	-17	43
beside eat a	15
beside eat i other	16
beside eat my	10
beside eat p other		-8		24
beside eat p person	16
beside empty	13
beside empty b other	6	5		-5
beside fail	14
beside feed	-7	-6		16
beside feel	19
beside feel b person	18
beside feel it	13
beside figure		21		-8
beside figure Q	-22	36		-13
beside figure b other	-19	35
beside figure i person	-13	20		-11
beside figure pp person	11	-31	12
beside file	14
beside fill				12
beside fill b other	13
beside fill b person				9
beside fill it				10
beside fill pp other	-6			30
beside fill pp person	15
beside fill the	22
beside fill with	-23	-8		37
beside find a	16
beside find b other		8
beside find b person	-14	21		-12
beside find it		8
beside find pp nobody	7
beside find pp other	17
beside find pp person	25
beside finish ,	-10	-15		24
beside finish G	-20	6	18	-16
beside finish b nobody	-23	-20		17
beside finish b other				14
beside finish b person	10
beside finish i person	6
beside finish pp other	5
beside finish pp person	24			-7
beside finish the	13
beside finish to	21
beside fish	23
beside fit				11
beside fit ,	-21		-4	22
beside fit Q	12	-6
beside fit bpp other	18
beside fit pp other				12
beside fit s other	13
beside fix ,		7		-15
beside fix b other		13		-19
beside fix b person	-10			17
beside fix pp other			-5
beside flash	19
beside flash b other	14
beside flip			15
beside float	-9	6	-8	8
beside flush	26
beside flush b other	14
beside foam	-6	-8		18
beside forget Q	18	-11
beside forget b person	17
beside forget the	15
beside fray	25	-12	-16	-18
beside fray pp other	25	-12	-16	-18
beside fre	28
beside fre it	11
beside fre pp nobody	17
beside get Q			6
beside get a		6
beside get about		-4	10
beside get all	35			-11
beside get an	-26	20		9
beside get another	26	-17	-7	-7
beside get b nobody	-8	41
beside get b other		30
beside get his	5
beside get i other		11		-4
beside get i person	12		-12
beside get it	35	-16
beside get its				25
beside get maybe	-8		15
beside get me		9
beside get no	-23	24			4
beside get p nobody	-12	-29	19	-13	17
beside get p person			29
beside get plenty	-11	-4	25
beside get s person	-14	27
beside get that	20	-7	-7
beside get their			8	-6
beside get to	11
beside give b other	-21	28
beside give b person		-31	-23	8		20
beside give it	27	-19
beside give me					15
beside give p other	21
beside give p person					17
beside glue				8
beside glue pp other	7
beside glue pp person	-14			13		8
beside glue up	-17			23
beside go ,	-16		10
beside go Q		-26	-18	6	7
beside go and			13
beside go b person	6
beside go back		9
beside go down	13
beside go i other	13
beside go off	22			-11
beside go on		11		-8
beside go out	25	-8
beside go over	13
beside go p nobody				12
beside go p other				9
beside go p person				6
beside go s person	5
beside go the	15
beside go through		-9		44
beside go to	5
beside go up				12
beside go with	21			-11
beside gotta	7
beside gotta pull	5
beside gotta will person	5
beside grab Q	-13	13		-7	16
beside grab a		11
beside grab b nobody	5
beside grab b person		22
beside grab me	8
beside grout	-15			20
beside guess		16
beside guess b other		7
beside guess b person	-7	13
beside hang				18
beside hang ,		-11	-10	32
beside hang G	26			-11
beside hang Q	-11			32
beside hang and	12	-6
beside hang b other	-13
beside hang b person				14
beside hang by	30
beside hang i other	9
beside hang on		5
beside hang pp nobody				9
beside hang pp other				21
beside hang pp person	-7			27
beside hang s other	20			-11
beside happen	7
beside has Q	17		-8	-11
beside has a	-4					8
beside has has person		-16	21
beside has its	28
beside has no	13
beside has the		-7	12	-4
beside has to	7
beside haul	12
beside haul the	8
beside have Q			15
beside have b nobody	-19		59
beside have b other	19
beside have b person			42
beside have i other	35
beside have i person	-18	10	16	-18
beside have in	19
beside have its	13
beside have let go	17		-9
beside have my	23
beside have only	11	-6
beside have pp nobody	22		-6
beside have pp other	14
beside have pp person	5
beside have still	-32	-5	36	-6
beside have the	6
beside have to	30
beside he'll	5
beside he'll will other	5
beside head		6
beside head b other		8		-6
beside help	24	-8
beside help b other	24	-8
beside hit bpp nobody				6
beside hit bpp other	7
beside hit bpp person				11
beside hit s other	12
beside hit the	12
beside hold	5
beside hold Q	23
beside hold a	12
beside hold b other	16
beside hold i other	10
beside hold pp person	5
beside hold s other						13
beside hook	5
beside hose	16
beside hum	23
beside hum s other	21
beside i'll	14
beside i'll G	12
beside i'll will other	14
beside i've	4	10	-9	-12
beside i've has nobody	37		-22
beside i've has other		14		-14
beside inject	28			-11
beside install	-4			16
beside insulate	16
beside is G	24
beside is N	15
beside is Q	16
beside is a		-6
beside is all	32			-5
beside is already	17
beside is at	7
beside is black	11
beside is down	-13	-7		24
beside is flat	13
beside is for	-10		8
beside is full	15
beside is good	18
beside is in		-27	14
beside is loose	12
beside is no	14
beside is not	5
beside is only	11
beside is out	18
beside is ready	28	-4		-15
beside is still	8
beside is the	13
beside is up	-7			23
beside isn't	25
beside isn't is other	25
beside kick	11
beside kill	19
beside kill the	4
beside knock	6
beside knock b other			14
beside knock pp other	10
beside knock pp person	18		-5
beside know	4
beside know b other	-6			15
beside know b person	17
beside know the	17
beside label	24
beside land			4
beside land pp other			12	-11
beside land the	10
beside lay b other	-15	13	8	-23
beside lay b person	22			-10
beside lay down			-7	14
beside lay i other	23			-12
beside lay in		9		-32
beside lay pp other	16
beside lay pp person	-7			20
beside lay the	32
beside leak	23
beside leak b other	26
beside leak i other	7
beside leave ,	30	-13
beside leave :		-19	26	-12
beside leave G	17
beside leave Q	-5	-20	43	-15
beside leave a	9
beside leave and		22	-14
beside leave b nobody	5
beside leave b other	21
beside leave corner	12
beside leave for	20		-12
beside leave i other	16
beside leave in	15
beside leave me	-23		29	-25
beside leave of	17
beside leave on	12
beside leave over	8	-12
beside leave pp nobody		-19	35	-11
beside leave s other	-14		24	-7
beside leave side	-7			5
beside leave so		18	-15
beside leave the	6
beside leave with	-5	-29		17
beside let	8
beside let bpp other	12
beside let in		-17		9
beside let the	4
beside level b other	7			-12
beside level now	20	-5
beside level pp other	-22			28
beside lift	7
beside like G	7
beside like a	11
beside like b other	10
beside like b person				4
beside look s other	6
beside lose	6
beside lose b person	8
beside lose pp other	24
beside lower	25
beside lower b other	25
beside lower than	23	-7
beside make G		13
beside make Q	34	-20		-12
beside make a	11
beside make b person		11
beside make it	-19	26
beside make pp person	25	-5		-11
beside make the	5
beside mark	26
beside mark pp other	18
beside match		-7	10
beside match b other		-8	15	-4
beside measure	19
beside measure Q	25
beside measure bp other	9
beside measure bp person			17
beside measure bpp nobody				6
beside measure bpp other	12
beside measure bpp person				11
beside measure i other	18
beside measure i person	16
beside measure p other			5
beside measure pp other	7
beside measure s person	8
beside measure the	7
beside meet	17
beside meet b other	5
beside meet the	5
beside miss		11
beside miss ,	18			-13
beside miss Q		11		-15
beside miss a	29	-10
beside miss at	16
beside miss b other		11
beside miss b person	-14	20
beside miss from	-29	32
beside miss i nobody	-17	29
beside miss i person	-4	15
beside miss the	7
beside mitre		-14	-23	-19	23
beside mix Q		-5		17
beside mix pp nobody	-31	8		13
beside mount				5
beside mount pp other	29
beside move	9
beside move Q	24	-9
beside move b nobody		6
beside move b other	17
beside move i nobody	-4	14
beside move i other	17
beside move i person	-20	-13	29	-10
beside move it	5
beside move p nobody				12
beside move p other				9
beside move p person				6
beside move pp nobody		-12	31
beside move pp person	7
beside move s person	5
beside move the			7
beside nail	-18		-18	23
beside nail pp other	-8	11	-7
beside need		22
beside need :		23
beside need G		15
beside need N		5
beside need T	19
beside need an	12	-8
beside need another	-33	38
beside need b nobody		39
beside need b other		14
beside need b person		19
beside need for			11
beside need i person		31	-11	-27
beside need more		11
beside need pp other		-6	11	-17
beside need pp person		-5	8
beside need qt	-26	31
beside need s nobody		8
beside need the	-5		20	-9
beside need to	25	-11
beside nick	28
beside nick pp other	26
beside nick pp person	9
beside nick the	7
beside notch	12
beside notch pp other	14
beside oil	12
beside oil b other	7
beside open			5
beside open ,	-18	-13	17
beside open Q		-17		6
beside open b other	7
beside open it	13
beside open pp nobody	-8	-14	21	-20
beside open pp other				6
beside open pp person	4
beside open s other	10
beside order		20
beside order ,		-12	4		10
beside order G		-13			27
beside order N		7
beside order Q		16
beside order a	14	-10
beside order b nobody		7
beside order b other		20
beside order b person	-5	7
beside order i person	-22	33		-6
beside order pp nobody	-10	-25			30
beside order pp other		-10
beside order pp person		-7			26
beside order the	-21	26			10
beside other b nobody		22
beside other i nobody	-27	46	-4	-9
beside other p nobody	-11	-24		-7		24
beside other p person			7
beside other pp nobody	-18	-16		-38	34	8
beside other pp person						12
beside other s nobody	26			-8
beside other s other	11
beside owe	-15	31		-13	5
beside owe b other	-10	19	-14	-12
beside owe b person					12
beside owe the	19
beside own b other				-8
beside pack				12
beside pack b other	-23	20
beside pack it		17		-30
beside pack pp other		-27	-25	17
beside pack pp person	5
beside pack the	6
beside pack with	9	-9	-9	5
beside paint Q	18			-7
beside paint pp person	17
beside pass	12
beside pass T	12
beside pass b person				11
beside pass pp other	19
beside pass pp person	12
beside patch Q	17
beside patch b other		8
beside patch pp nobody	22
beside patch the	11
beside pay	13			-11	5
beside pay for	10		-5	-12	7
beside peel	27
beside peel i other	18
beside phone	20
beside phone b other	7
beside pick				-4	21
beside pick G	6
beside pick Q		6		-13
beside pick b nobody		23
beside pick b other	5	5
beside pick b person	-14	24
beside pick me	-8	27		-5
beside pick pp nobody	-26	-27		-8	46
beside pick pp person		-21			26
beside pick up	-14			-15	38
beside pin	-9	-6		10
beside pin pp other	-9	-6		10
beside plane	14
beside plane b other	12
beside plane b person	6
beside plane pp person	5
beside plane the	8
beside plug				13
beside plug pp nobody	-16			21
beside plug pp other	13
beside plug pp person				7
beside point			9
beside point Q	23
beside point b other	22
beside pop	24
beside pop b other	7
beside pop the	11
beside pour Q		-5	-8	22
beside pour pp other	18
beside prime b person	18
beside prime pp nobody	24			-6
beside prime pp other	-5			11
beside prime the	-11			16
beside pull Q				6
beside pull i other	26
beside pull i person	14
beside pull it	29			-9
beside pull out	10
beside pull pp nobody	33			-6
beside pull pp person			5
beside pull the	26
beside push	7
beside push a	6
beside push the	6
beside put				18
beside put G	-26	13
beside put Q	-15			17
beside put a	-7			17
beside put all	-8			13
beside put bpp nobody	-9			27
beside put bpp other				12
beside put bpp person				9
beside put down	-13			20
beside put i other	21			-7
beside put i person	6	13		-28
beside put in	-22			26
beside put it	-8	-14		20
beside put new	-6	-28		24
beside put on	-25	-8		33
beside put that	18
beside put the	12
beside put with	11	-15	-7	9
beside quit	12
beside quit bpp other	12
beside quote	22	-4
beside rack	11
beside rack pp other	11
beside raise	15
beside rake				10
beside rate	9
beside rate Q	9
beside read	24
beside read Q	25
beside read bpp other	12
beside read i other	8
beside read s other	18
beside rebuild	-6	-10		20
beside rebuild pp other		-7		6
beside recess	25
beside recess pp nobody	30			-12
beside redo		6	-8
beside redo p other		-16	-16	13
beside reglue	29			-13
beside rehang				14
beside relay				8
beside relay Q	-11			16
beside relay pp other	28			-18
beside remake		11		-9
beside reorder	-31	34	-9	-17	6
beside reorder Q	-17	18			10
beside repair	-19			27
beside repair b other	-37		-8	35
beside replace	-17			25
beside replace ,	44	-15		-36
beside replace Q		5	-15
beside replace pp nobody	-22			30
beside replace pp other	-7			13
beside replace pp person	9		-10
beside replace the	-12			21
beside require	-25	39		-33
beside require pp other	-35	31	9	-17
beside reroute	5
beside reset				16
beside reset bpp other				7
beside reset it		-14		17
beside return	-9			-16		20
beside return Q	13	-17	-19	-7		13
beside return b nobody		24		-16
beside return b other	49	-18	-24			-9
beside return pp nobody	-42	-15	-28	-24		50
beside reverse	12
beside ring	11
beside rip a		9
beside rip b other	27			-5
beside rip b person	-9		14
beside rip pp other	11
beside rip pp person	-6			11
beside rock		-6	-7	7
beside rock pp other		-7	-8	11
beside rod	29			-16
beside rod pp other	21			-6
beside roll	18
beside roll b other	10
beside roll b person	21
beside roll pp other	17
beside roll pp person				10
beside roll the				11
beside rub	15
beside run ,	9
beside run G	11
beside run Q		-4		31
beside run a		4
beside run about	16
beside run bp person	-9	13
beside run i other	31
beside run out	5			-11
beside run p nobody				8
beside run p person				8
beside run s other	7
beside run the	20
beside run water	21
beside rust	5
beside rust b other	8
beside sag	14
beside sand pp other	-4
beside save			9
beside say G	6
beside say Q	35
beside say T	10
beside say b nobody	13
beside say b person	9
beside say i person	6
beside say no	5
beside say pp other	7
beside say pp person	21
beside say s person		12
beside say the	-6	17
beside scrape	28
beside scrape off	20			-10
beside scrape pp person	5
beside scratch b other			15
beside scratch the	-4		16
beside screw	-10			25
beside screw Q		-16	-13	14
beside screw down	-24	-16	-7	34
beside screw pp other				7
beside screw to	-9	20		-14
beside scribe	-8	27
beside scribe a		12	-10	-17
beside scribe b other	-16	21
beside scribe b person		11	-6	-14
beside scribe pp other	20
beside scribe the	6
beside seal b other	22			-8
beside seal b person	13
beside seal pp other				9
beside seal pp person				10
beside see G	5
beside see b nobody	8
beside see b person	10
beside see if	8
beside see it	15
beside see pp nobody	14
beside see pp person	15
beside see s other	27
beside see the	12
beside send	-6					21
beside send Q	-37	9		-10		21
beside send a		10
beside send i other	-20	28
beside send it	27	-11
beside send pp nobody	-24		-24	-22	-12	31
beside send pp other	-14	-11	9			16
beside send pp person		-12	5			6
beside send the	21
beside set ,	28
beside set Q			-15	11
beside set a		-8		7
beside set and	-5			13
beside set at	-6			13
beside set bpp other	9
beside set bpp person				13
beside set in	18			-11
beside set it				7
beside set screw	-10	16
beside set the	12
beside shave	16
beside shave the	16
beside shim	7
beside shim pp other		-9		11
beside shim pp person	19			-9
beside shim the	19			-5
beside ship	6		5	-9
beside ship pp person	-5		13
beside short		6
beside should	-13	-8		20
beside should will other	-17	-8		22
beside show	7
beside show s other		15	-7	-13
beside show up		12	-8	-13
beside shut	18
beside shut bpp other	19
beside shut the	5
beside sign	-6		18
beside sign off	8
beside sign pp person	22
beside sign the	-12		20
beside sister	7
beside sister Q	26			-25
beside sister a	-23			28
beside sister b person				-11
beside sister pp person	5	-10
beside sit Q	21
beside sit flat	-19	25		-8
beside sit i other	14
beside sit in	11
beside sit on	20
beside sit pp other			8
beside size	20
beside size Q	17	-7
beside size b other	16
beside skim	11
beside skin	22
beside skin over	22
beside slide	6
beside slide a	4
beside slide b person	6
beside smell	8
beside snake	19
beside snake Q	11
beside snake pp nobody	11
beside snap				7
beside snap pp other				15
beside snap the	17
beside snug	34			-14
beside snug pp nobody	31			-21
beside snug pp person	7
beside sort the			6
beside sound	21
beside sound b other	17
beside spend	-19	-15	-16	30
beside split bpp person				9
beside split the	15
beside spray	30
beside spray both	27			-17
beside spray pp other	32			-12
beside square	4
beside square and			15
beside square b other	4
beside squeak				4
beside squeak by	-5			13
beside stack	-8			18
beside stain		7		-18
beside stand Q		11
beside stand i other	5
beside stand s other	15
beside start	37
beside start b other	19	-16
beside start b person	18
beside stay		-13	26
beside stay b other			14
beside stay s other	7
beside stick a				8
beside stick b other	19			-15
beside stick on	6
beside stick out	4
beside stick pp other	-9			19
beside stick pp person				11
beside stick s other	18
beside stop		4
beside stop b other	-9	21
beside stop s other	-11			11
beside straighten	-8		-12	-14	22
beside straighten b other		5
beside straighten that		5
beside stretch	22			-6
beside stretch pp other	19			-7
beside strip				-9
beside strip ,	30	-16	-5	-21
beside strip in	-4			16
beside strip of		11
beside strip pp other		6
beside strip the	23			-18
beside stuff	-17	27
beside stuff b other	-17	22		-5
beside stuff pp other	12	-8	-8
beside stuff the		-6		6
beside supply		5		-5
beside supply b other	-8	16
beside swap	-4			8
beside swap G	16			-6
beside swap Q		-5		15
beside swap b nobody	6
beside swap b other	-10	8	12	-29
beside swap b person		5		-12
beside swap for	-18	25
beside swap in	-33	6		28
beside swap pp nobody	-12			19
beside swap pp other	-12	-23		26
beside swap pp person				6
beside swap the	8
beside swing		13
beside swing b person	-7	20		-9
beside swing by	-13	25		-12
beside tack	10
beside take						4
beside take Q				16
beside take a	40
beside take b other			10	-5
beside take me	21
beside take out	46	-25		-28
beside take p nobody	-38	-9	-28			45
beside take p other	7	-6		15
beside take p person	-15			-14		34
beside take s other	16			-25
beside take that	-22		9			22
beside take the			-4	-22		45
beside talk	5
beside talk to	14
beside tape	22
beside tape it	8
beside tape pp person	21			-10
beside tear	22
beside tear by	9
beside tear p other	21
beside tell her	9
beside tell him	-8	16
beside tell me	10
beside test	20
beside test b other	13
beside test pp other	17
beside test with	5
beside text	10
beside text b other	15
beside they've	-12	-18	22	-16
beside they've has other	-12	-18	22	-16
beside throw		14
beside throw Q		16
beside throw a	-25	14		10
beside throw b other	-11	30
beside throw p person	-19	-13		34
beside tie				5
beside tie pp other	14
beside tie pp person	-6	-7		16
beside tighten	25			-6
beside tighten pp person	22			-11
beside tighten the	21			-5
beside tile	26			-10
beside top G	19			-8
beside top and	17
beside top hinge	-32	34
beside touch that	5
beside trace	27
beside trim	27			-13
beside trim pp other	28			-15
beside trip b other				-5
beside try			7
beside try b other	-10	22
beside try pp person	30			-5
beside turn Q	-5	-21		17
beside turn b other				15
beside turn out	-14	20
beside turn pp other	9	-16	16	-29
beside turn s other	-12	19
beside turn up		-6	20	-18
beside undefined has nobody		-19	14
beside undefined has person		-18	20
beside undefined is person	9
beside undefined will nobody	22
beside undefined will person	9
beside use				25
beside use ,	-8		37	-28
beside use :	-9	-14	-12	25
beside use G	22			-5
beside use Q				25
beside use a		-6		24
beside use about		-8	-11	21
beside use b nobody	-26	-8	-6	48
beside use b other	17
beside use b person	-9
beside use pp nobody				29
beside use pp other				25
beside use pp person				24
beside use up	-40	6		21
beside vacuum	30			-22
beside wait b other	5			-5
beside wait b person	21
beside wait i other	-24	13	19
beside wait i person	6
beside wait on	-25	18	15
beside wait s other	17
beside wait until	9
beside walk	6				5
beside walk b nobody	17			-5
beside walk the	17
beside want G	9	9	-6	-13
beside want another	16	-8
beside want at		6
beside want b nobody	11			-5
beside want b other	32	-18
beside want b person		21
beside want it	30	-19
beside want pp other	-13	-6	21
beside want pp person		-5	8
beside want s nobody		8	-5	-13
beside want s other	17
beside want s person	12
beside want the	44	-17
beside want to	19	-7
beside want water	19
beside wash	20
beside wash the	17
beside wasn't	-4	14	-9	-18
beside wasn't is other	-4	14	-9	-18
beside weep	15
beside weep i other	19
beside weigh	-25	4	-5	20
beside were	29
beside were is other	29			-8
beside will glue		10
beside wipe	15
beside wipe pp person	15
beside wipe the	7
beside wire	24
beside wire ,	19	-7
beside wire pp other	22
beside won't	11
beside won't will other	7
beside wont	17
beside work	30
beside work bp person	-9	13
beside work bpp nobody				25
beside work i nobody	22
beside work i other	22
beside work on	23	-8		-5
beside work p nobody				6
beside work p other	4
beside work p person				4
beside work pp nobody				29
beside work s person	22
beside wouldn't will other	5
beside wrap pp other			6	-6
beside wrap with			14	-15
beside wrote	17
beside wrote b person	17
bound about			16
bound atMost	5
bound over	33
bound under	18
code	-34	13		24
count after bought here			-7	-8	5
count after bought sentence	-43	-11	6		31
count after have far		22		-12
count after have here	-14		25	-31
count after have sentence	-10	16	6	-6
count after need here		29		-8
count after need sentence	-4	21		-5
count after returned far	-26	12	12	-8
count after returned sentence	-44		-25	-30	28	20
count after used far		19
count after used here		-10		19
count before it ate						15
count before it back	-32					26
count before it bought	-16		-23	-17	41
count before it came	-40		16
count before it have	-23		52
count before it lacks	-24	38
count before it need		35
count before it used				21
count behind it ate		-32				8
count behind it back	-25		16			34
count behind it bought	-52	11		-15	6	19
count behind it came		-13				11
count behind it have			38
count behind it lacks			-26	12
count behind it need	-14	9
count behind it used				26
count beside add	-4			14
count beside are	-28			45
count beside be	22
count beside bend	-8	24	-24	-24
count beside blow	31			-17
count beside bolt	-26	-15	-11	32
count beside box	-35	34
count beside break	-9	5	13	-14
count beside bring	-15	24
count beside burn	-25		15	13
count beside buy	-7	26
count beside buy b nobody		27
count beside buy b other		7
count beside buy b person	-11	7			11
count beside buy pp nobody		-26	-6		20
count beside buy pp other	-45		6	-7	26
count beside buy pp person	-33	-22	-11	-7	37
count beside call	49	-7
count beside can	6	11	-8	-29
count beside change	-21	-32		42
count beside clean	-6	-15		14
count beside come	-12	-34	20		13
count beside count		-34	22	-14
count beside cut	-6		6
count beside date	23			-14
count beside dial	22			-8
count beside dig	25
count beside do	-10					19
count beside drill				4
count beside drip	14	5		-25
count beside drive	-28			32
count beside eat	-13	-16	-19	26
count beside figure	-31	20	14	-8
count beside find	-12	17	-6
count beside finish	8	-26	-10	8
count beside fit	-14		-12	21
count beside fix		5	-9	-5
count beside give	-24		-23	-23	20	18
count beside glue	-13	-10		16		11
count beside go	-21			6
count beside grab	7	-5			10
count beside hang	-24		-9	43
count beside has			-24
count beside have			13
count beside have b nobody	-24		39	-9
count beside have b other	18		-19	-13
count beside have b person	-13	-11	43
count beside have pp other	33	-5	-17	-24
count beside have pp person			-8	13
count beside head	-17	17	-5
count beside hit				8
count beside hold	-13			5		16
count beside leave	-19	-36	45	-14
count beside like		10	-11	-7
count beside make		12		-15
count beside measure	34	-7
count beside measure bp other	39	-16	-24	-17
count beside measure i other	23
count beside measure i person	10
count beside measure p other	-17	-30	18
count beside measure pp other				8
count beside measure s other					12
count beside miss		22	-18	-28
count beside mount			-20	13
count beside move	12	-35	17	-24
count beside move b other		17		-7
count beside move p other	-29			24
count beside move p person	-6		8	4
count beside move pp nobody	-27	-18	37	-26
count beside move pp other	-32		36	-7
count beside move s other	-25	19	10
count beside nail	-18	12	-28	13
count beside need		28
count beside need b nobody		24
count beside need b other		13
count beside need b person		29
count beside need pp other	-24	9	19	-17
count beside need pp person			17
count beside need s nobody	25	-15
count beside need s other	21	-12		-10
count beside nothing	-7
count beside open	-12	-22	31	-32
count beside order	-15	18		-10	14
count beside other b nobody		34		-11
count beside other b other		32		-14
count beside other b person		12	-8
count beside other i nobody	-39	45		-15
count beside other i other				-36
count beside other i person	-5	17		-10
count beside other p nobody	-22	-31	23	-32		21
count beside other p other		-18
count beside other p person		-37		8
count beside other pp nobody	-45		8	-37	17	22
count beside other pp other	8	-34			4
count beside other pp person		-37	-29	-9	10	23
count beside other s other	5	15		-18
count beside paint	4
count beside patch		17		-23
count beside pick	-5	7		-12	17
count beside plug				5
count beside point	20
count beside prime	27			-10
count beside pull	43			-28
count beside put	-23	-14		45
count beside read	24
count beside replace	-30	13	-19	25
count beside require	-14	33	-33	-29
count beside return	21	-17	-19	-6
count beside rip				9
count beside roll	26			-10
count beside run	-10			19
count beside sand				-16
count beside say			8
count beside say b other	15	-13	11	-14
count beside say pp person		-16	10	-9
count beside screw	-32	9	-20	31
count beside see	10	-6	7	-15
count beside see b other		-4	14	-16
count beside send	-42			-20		37
count beside set			-9	5
count beside sister	24	7		-35
count beside split	-27	19	17	-26
count beside spray	31	-10	-6	-21
count beside strip	18		-10	-32
count beside take		-13				20
count beside test	19
count beside throw	-25	19	-14	6
count beside top	11
count beside turn	27			-7
count beside undefined has other			-44
count beside undefined is other				5
count beside undefined is person	18
count beside undefined will other	-10		-11	15
count beside use	-18			23
count beside use b person	-14	16
count beside use pp nobody	-18			19
count beside use pp other				6
count beside use pp person	-38		8	28
count beside wait	-18	14	15	-30
count beside want	7
count beside were	22			-10
count beside work	30	-7		-13
count beside work b nobody			10	-16
count beside work b other		29		-17
count beside work b person	-33	16		13
count beside work bp other		-25		15
count beside work bpp nobody	-20			33
count beside work bpp other	-5
count beside work bpp person	-21	-27	8	29
count beside work i nobody	16
count beside work i other		16	-17
count beside work p nobody	-9			9
count beside work p other	13	-24	-15
count beside work p person		10	-6
count beside work pp nobody				32
count beside work pp person		-6		21
count beside work s other	22	-6
count buy imperative behind		5
count buy modal behind	-9	18
count buy past before	-32	-22	-16	12	21
count buy past behind	-14	-35	-14	-11	46
count buy present behind	-38	24	-6	-14	14
count cue ate		-12				22
count cue back	-7			-11		53
count cue bought	-30			-31	32
count cue came	-22	-5	12			18
count cue have	-10		76
count cue lacks	-17	6		13
count cue need		36
count cue used				44
count flawed	32
count have present before	17			-9
count have present behind			24
count kept	-14	-4	47
count left 
	11	10	-5	-35
count left #		-30	-22	25
count left (	-16		-12	15		8
count left +	-14	15
count left ,	-25
count left -	-6	14		-7
count left .	-6			12
count left :	-33			38
count left N	32	-15		-6
count left T			5
count left about			13
count left all		-12		32
count left and	-23	29
count left are	28			-13
count left at	65
count left back	-21	-26		-5		26
count left be	31
count left between	25	-14
count left bring		18
count left but	20	-11
count left buy	-25	20			20
count left by	8	9		-38
count left change		-12		18
count left cut	-6	10
count left do	30			-12
count left down	-19	-7	-12	29
count left drill	20			-15
count left drive	-7	-9		22
count left exam	20
count left for	9	10		-27
count left from	20			-14
count left get	-14	15
count left go	12	-22
count left grab	-8				16
count left hang	-25	-12		35
count left has		8	-7	-14
count left have			8
count left i'm	-6	16		-21
count left in		-30	-15	32
count left is			6
count left it	14			-25
count left it's			11	-41
count left last	21	-11	-6
count left like			-20
count left maybe	-12	-16	33	-11
count left me	-28	17	7	-13	8
count left miss		13		-17
count left need		16
count left now	10	-10
count left of	46	-6	-20	-36
count left on		-6	-8	31
count left only		-24	24	-10
count left order	-12	23
count left other				-8
count left out	-7	-8		22
count left over	23
count left paint	23
count left past	14
count left point	20
count left pull	11	-22	-19	-29		19
count left put				14
count left read	18
count left replace	-7	14	-15
count left return	16	-15	-18
count left run		-11
count left sand	-18	8	16
count left say	33
count left set			-19	12
count left short	-25	21	8	-19
count left so	-44	35		12
count left take	-22	-6	-30	27		7
count left that's	-29	14		13
count left the			5
count left then	38	-7		-19
count left there's	-22	-35	52
count left those		-9	8
count left through	5
count left throw	-25	19	-14	6
count left to	10	-16	9	-5
count left under	19
count left up	-26		-7	9	19
count left use				21
count left want	7
count left we're	11		-5	-9
count left with	-51			44
count list have	-45		42	-34
count list need	-15	34	-15	-38		6
count measure owed behind	-6		7
count measure past behind	15	-12	-10	-12	12
count measure present before	9			-18
count measure present behind					12
count more	-15	24		-13
count move imperative behind	28	-9
count move past before	-7		51	-15
count move past behind	-7		5
count move present behind		16	-19	-27
count name flawed	-12			7
count named before area	7	-5
count named before finish	-28	6	10
count named before surface	33
count named before word	16			-17
count named here defect	27		-19
count named here finish	-10		10	-28		19
count named here material	-67	13		24
count named here part	-88	17		16
count named here surface	49
count named here tool	-59	23	-27	33	6
count named here word				10
count nameless	25			-7
count need modal behind	-13	19
count need owed before	13		-15	-13
count need owed behind		12
count need past before	-24		11	4
count need past behind	18	-5
count need present behind	-16	21		-15
count not ahead		18	-23	-23
count null copula before		17	-14	-6
count null modal behind		22	-22
count null none no	-9
count other copula before	-7
count other imperative behind	-28	76
count other modal before			-10	9
count other modal behind	5	5		-11
count other owed behind	-16		23	-21
count other past before	-5					7
count other past behind		-12				8
count other present behind	-11	14
count pointing	-18			27
count right 
		9
count right #	-9	26
count right &	-22	-16	-7	30
count right (	-19		4	-20	18
count right )	-7	-15		13
count right +	-6			6
count right -	35	-9		-15
count right .	-16			6
count right :	7	-9		-11		10
count right ;	-12	-11	30	-13
count right @	-30	25	-19	10
count right G	-18	11	-13	13
count right Q		6
count right a	8	4			-18
count right after	29	-19		-16
count right all	-31		19
count right already		-16	13	-26
count right and	-13			24
count right are	-21		5	16
count right be	13	-24
count right because	-20	-10	-24			30
count right bend	26			-17
count right break	-9	-13		16
count right by		20		-14
count right can	-41	19	25	-9
count right come		-29		-50		24
count right crack	17	-14	-15			5
count right do		16		-31
count right don't				7
count right down		-12	-13	22
count right each		-12		16
count right for	-36	38
count right from	-5	-14
count right get	14	-14
count right glue	-29			32
count right go	-8			9
count right hang	-23	-12		31
count right has	45		-4	-25
count right i				-7
count right i'll	37	-18		-12
count right i'm	24	-12	-11
count right in		-45	20	11
count right is	13	-18
count right it	-26		16	16
count right it's	-17		-12	21
count right just	27		-5	-23
count right leave	-24		59	-5
count right miss	13	7	-23	-41
count right more		17
count right need	16		-19	-16
count right no	-40	41	-20
count right now		-17	-13	22
count right of	-37	49
count right off	30
count right on				9
count right or	36	-31		-10
count right out	-33	-22	-31	49
count right over	-7	-18	18	-29		12
count right pull	16		-19
count right short		28	-31	-41
count right so	6
count right spare	-30	-13	34	-20
count right still			11	-20
count right strip	9
count right that	35	-9	-32
count right that's	23			-19
count right the	-4	11
count right then	-10	19
count right there's	-17			18
count right they		11	-21	-35	11
count right they're	-21	-27	24		8
count right through		-7		8
count right to		5		-20		14
count right up	-23		-14	39
count right use	-23		8	15
count right were			-13	-21		27
count right when	12	-13	5
count right where	-19	-7	28	-11
count right which	35
count right with	6
count say imperative behind	-25	5		8
count say modal behind	26	-15
count say past behind		9
count say present behind	-6	7	8
count says copula before	-5
count says copula behind not		5
count says imperative behind		37
count says imperative behind not		20		-18
count says modal before	-12	11	-16	6
count says modal before not	-22		8	5
count says modal behind		30
count says modal behind not	11	5	-21	-6
count says none no	-9
count says none no not		15		-22
count says owed before	-31	24		-35	20
count says owed behind		11
count says owed behind not	25	-11
count says past before	-5			13
count says past before not	-18	-14	5	18
count says past behind				12
count says past behind not	21		-40
count says present behind	-9		7
count says present behind not	-16	14		11
count sized	-60	38
count sold so false	17
count sold so true	-14
count then buy b	-30	40		-43
count then buy pp	-9	-22	-16	5	19
count then have b				-14
count then have pp	13		-5
count then measure b	-19	-13	-29	32
count then measure bp	15			-18
count then measure i	-20			19
count then measure p	-10	-31				30
count then measure pp	34	-19	-11	-11
count then measure s	24	-16
count then move b		-13
count then move p		-31	-20	25
count then move pp	-9		47
count then move s		21	-6	-13
count then need b	-29		46	-42
count then need pp	-33	14	25	-25
count then need s		8	-5
count then other b				-10
count then other i		21		-48
count then other p			-9			9
count then other pp	9	-8		-12
count then other s	19	-4		-4
count then say b		15
count then say pp	34	-17		-9
count then say s		17	-14	-15
count then see b	9	6	-11	-15
count then see pp	9		-7	-11
count then undefined has	26			-14
count then undefined is				7
count then undefined will				-7
count then use pp	-5		10
count then work bp	20			-20
count then work bpp	10	-7
count then work i				-22
count then work p	-5	-33		18
count then work pp		-15		7
count then work s	-13	6		8
count use past before	-25			32
count use past behind				11
count use present behind	-37	-5		38
count verb balance behind	-30		18	6
count verb be before	-6
count verb break behind	-21	16		5
count verb bring behind	-21	17
count verb buy behind		19
count verb call behind	-7	8
count verb change behind	-43	-17		40
count verb come behind		-20	-26	-22	28
count verb count behind	16	-40	9	-19
count verb crack before	23	-16
count verb cut behind			11	-15
count verb do behind	25	-12		-15
count verb drive behind	-22			30
count verb find behind	-15	10		9
count verb finish behind	28	-15
count verb get before	-37	27	-41	24
count verb get behind	-7	20
count verb give behind	-21		-21	-21	19	17
count verb glue behind	-7	-15	-5	21
count verb go behind				5
count verb grab behind	11	-7			9
count verb hang before	-34			34
count verb hang behind	-28			40
count verb have before	12			-8
count verb have behind			17
count verb hit behind	8
count verb i'll behind	-9	26		-20
count verb leave before	-28		51
count verb leave behind			13	-22
count verb make behind	-11		14
count verb measure behind	24			-5
count verb miss behind	-28	33
count verb move behind			11	-26
count verb must behind	16
count verb nail behind		-16	-9	4
count verb need before		12	-16	-15
count verb need behind		33
count verb null before		17	-14	-6
count verb null no	-9
count verb order behind	-5	13			6
count verb paint behind	24			-9
count verb patch behind	-6	17		-15
count verb pick behind	-22	22		-12	16
count verb prime behind	34			-25
count verb pull behind	35			-21
count verb put behind			-26	23
count verb rate behind	25	-7		-5
count verb read behind	6
count verb rehang behind	-16			24
count verb replace behind	-10	-17	-7	21
count verb run behind	-27	7		24
count verb screw behind		-13	-10	13
count verb see behind		11	-9
count verb send behind	-14		-36	-26		36
count verb set behind				8
count verb should behind	-13	-12		22
count verb sister behind	9	13		-13
count verb strap behind	-24		5	16
count verb swap behind			-18
count verb take behind	-23	-23				27
count verb think behind	-20		17
count verb throw behind	-25	19	-14	6
count verb use before	-31			38
count verb use behind				6
count verb want before	-11	-18	16	8
count whole clause	-24			30
count work modal before	-30	21	17	-16
count work modal behind				-6
count work owed behind	14			-30
count work past before		-6		29
count work past behind				43
count work present before	-40		5	29
count work present behind	-11	-11	14	6
counter insulation	-21		19
counter landscape	11
cue bought	-7				46
cue need		14
first N		17
first air	12
first an	-34	45
first anchor	15	8	-16	-11
first another	5			-5
first any	33
first anything				14
first apt	21
first backsplash	19
first bath	12
first bay	8
first bedroom	16
first birch	-13		18
first black	32
first block	36
first bone	22
first bottom	16
first bowl	11
first bracket	-4	13
first brass	31
first brown	30	-16
first bye	24
first cab	-9		17
first cap	25
first catch	15
first caulk	41
first ceiling	14
first circuit	7
first clamp			6
first clear	29
first clearance	18
first clip	12			-4
first coat	22
first code				8
first coffee	27	-6
first corner	20
first counter	22
first crown	17
first cust	27	-12
first daylight	9
first drain	14
first draw	14
first drill	25
first drop	15
first drywall	40
first due	22
first dumpster	25			-11
first edge	14
first eggshell	-22	11	14
first electrical					17
first epoxy		-17		22
first exhaust	16
first fall	5
first fence	13
first final	11
first first	21
first first coat	11
first flash	-8		22	-10
first flat	6
first floor	8
first foam	11
first form	25	-6
first frame	-16	14
first front	22
first gap	10
first gas	14
first glue	33
first gray	-12	13		6
first green	18
first happy	14
first hearth	31
first heat	15
first hello	14
first her	31
first hinge	20
first his	29
first hole	9
first hook	10
first hot	33			-12
first house	22
first hvac	7
first island	13
first jan	17
first ladder	25
first land	4
first latch	29
first left hand	19
first legs	9
first lh	24	-7
first lift	19
first line	18
first list	16
first lock	25
first lol	18
first long	7
first luis	25
first main	15
first maple	19
first more		5
first mortar	25
first mud		10		-12
first my	35
first nah	24
first nail		4
first neutral	9
first new	-42			48
first niche	21
first no	22
first oak				12
first old	38
first open	23
first orange	21
first our	-14		21
first pack					9
first paint	35
first permit	16
first pete	10
first pipe	-10	17
first plaster	27
first plate	-26	14		18
first plenty	-22		30
first pump	26
first punch	12
first putty				11
first quiet	23
first rear	24			-7
first red	19
first replacement	-5	15
first reveal	10
first rh	20	-11
first rick	19
first rigid	-7			20
first ring	31
first rise	12
first ro	18
first rudy	13
first sand	26
first saw	17
first screed	14
first screen		13
first seam	21
first seat	-29			32
first second	22
first second coat	13
first shim	-4	18
first shingle	15
first silicone	-6			20
first sir	14
first skirt	33
first slab	16
first slope	8
first small	-31	33
first soft close	29	-16
first some		9
first sorry	18
first splice	20
first stainless	36
first stair	14
first stairs	10
first staple			8
first static	16
first step	14
first steps	5
first strap				8
first strike	30
first svc	11
first tank	22
first tap	15
first temp				10
first their	28
first third	8
first this	6
first those	21
first tile	14
first trim	29
first truck	14
first upper	16		-5
first vent	-7	19
first wall	26
first walls	4
first walnut	26
first water	23
first waterproof	22
first wax	-29		22
first weatherstrip	26	-8
first white	53	-28
first whoever	27	-5
first wire	22	-8
first wrong	16
first yellow	12
first zone	24
gap  have	6	-23	12	-22
gap  have copula	24	-10		-14
gap  need	39
gap  need imperative	52	-47
gap  need none		12	-16	-16
gap  need owed	14
gap  need present	32	-11
gap  none imperative	-6	23
gap  none none	-20	18	8	-5
gap  none past	12
gap  none present	10			-5
gap  used	17			-8
gap  used none	25	-10		-25
gap  used past	20		23	-47
gap & need	-13	19
gap ( need	29	-27
gap + need	-24	44
gap + need imperative		12
gap + need owed		24
gap + none	26	-12		-17
gap + used	-28	-22	-11	43
gap + used none	-39	-21	-18	45
gap , and need	-22	35	-11	-17
gap , and need none	-22	35	-11	-17
gap , and used	25	-12
gap , bought	-17	-35		-39	43
gap , bought none	-19	-36		-40	43
gap , have		-25	26	-42
gap , have none		-23	28	-44
gap , need		26		-6
gap , need have	-14	19
gap , need have owed	-14	19
gap , need none		28
gap , none copula				9
gap , none none			-7
gap , none past				18
gap , so none	5
gap , used	-11	-23		33
gap , used none		-35		36
gap , used past			14		5
gap . have		8		-4
gap . have copula	26
gap . have none			11
gap . need copula	36
gap . need none owed	-11	23
gap . need past	-7	-10	16
gap . need present	19
gap . need used	-7	13
gap . need used owed	-7	13
gap . none copula	-8			5
gap . none none		-30
gap . none past	23
gap . none present	20
gap . used copula	-17	23
gap . used none		-15				9
gap . used past	26			-26
gap . used present	29
gap : none		-22	-24		20
gap : none none	-9	-27	-29		23
gap ; have	34
gap ; have none	34
gap ; need	-9	21	-8	-22
gap about none	31
gap and bought	-42	-38	-26	-27	54
gap and have	-46	-43	69	-20
gap and have copula	-19	-29	34	-8
gap and have none	-47	-17	49	-17
gap and have past		-15	8	-8
gap and have present	-23	-6	31
gap and need	-19	86
gap and need copula		15		-8
gap and need imperative	-11	29
gap and need modal	-24	46		-5
gap and need none	-41	58		-13
gap and need owed		25
gap and need past	12			-25
gap and need present	-8	30		-4
gap and none	11
gap and none copula	48
gap and none imperative	10
gap and none modal	-7	14
gap and none none	-10	13	-9
gap and none owed	-32	26
gap and none past	44			-12
gap and there's none	-19	9			17
gap and there's none copula	-19	9			17
gap and there's used			27	-14
gap and there's used copula			27	-14
gap and used	-26	-20		73
gap and used copula	-23	-8		38
gap and used none	-26	-31	-23	43
gap and used past	-6			35
gap and used present	9	-25	-8	11
gap at need	30	-23
gap before none	5
gap but none	8
gap by need	24	-10
gap by need owed	25	-19
gap by none copula	4
gap by none none	7
gap far bought copula	19
gap far bought imperative		16
gap far bought modal	15
gap far bought none		-19	21	-11	7
gap far bought past	-11
gap far bought present	17
gap far have imperative		23
gap far have modal	-7	24
gap far have owed		21
gap far have past			7
gap far have present		-14	7
gap far need modal	12
gap far none imperative		15
gap far none modal		12
gap far returned					11
gap far returned copula	17
gap far returned modal		8
gap far returned none	4	5
gap far returned owed	-18	29
gap far returned past	-30	-21	6	-28	41
gap far used copula	17
gap far used owed		12
gap fitted, used	-6			9
gap for have	10
gap for have copula	6
gap for need	41	-13
gap for need none	22	-5
gap for none	11
gap from none copula	5
gap from used	32	-12	-17	-20
gap had none	16
gap has none	19
gap has none present	18
gap have none present	-4		10
gap hung, used	15
gap i got none	-10	9	8	-20
gap i got none past	-10	9	8	-20
gap i put none				5
gap i put none past				5
gap in have	30
gap in have copula	11
gap in have none	14
gap in have past	13
gap in have present	18		-14
gap in need	31	-16
gap in none	15
gap in none none	26			-11
gap in used	20
gap in used copula	17
gap in, used	15			-24
gap is none	11
gap is none copula	11
gap it's none	-7	17
gap it's none copula	-7	17
gap left and have	11
gap left have	21		-12
gap left in have	21
gap left in have copula	17		-5
gap left in have past	11
gap left on have	11
gap left. have	15	-10	-12	9
gap left. have none		-17	-15	18
gap line need	-4	18
gap line need none	-16	26		-14
gap line none	31
gap line none none	27	-5
gap line none past	20
gap line used		10
gap line used none		9
gap near bought		-20
gap near bought copula	4
gap near bought none	20
gap near bought past		-4	-11	14	-12
gap near have		18
gap near have copula		14
gap near have imperative		11
gap near have modal		18
gap near have none		10		-7
gap near have past		8	-5
gap near need none	-9	44	-8	-24
gap near need past			9	-11
gap near returned	29
gap near returned copula	13
gap near returned past	26
gap near used imperative		13
gap near used modal	-18	29	-5	-6
gap near used owed	8	-10
gap near used past				5
gap near. bought						13
gap near. bought none	17
gap near. bought past	-7	-6	-15	-17		23
gap near. have imperative	12
gap near. have none			17	-37
gap near. have owed	15
gap near. have present	6
gap near. need copula	11
gap near. need imperative	-6
gap near. need modal	18
gap near. need none	9
gap near. need owed	8
gap near. need past						8
gap near. need present						10
gap near. none imperative	7
gap near. none owed		17
gap near. none present	8
gap near. returned	-26		25
gap near. returned none	-27	12	23
gap near. used copula	27
gap near. used imperative	8
gap near. used modal	7
gap near. used owed		8
gap no none	-16	-30	-12	33
gap of need	47	-37
gap of need owed	34	-29
gap of none present	-8		17
gap of those and need		14
gap of used	26			-20
gap of used past	24			-20
gap off used	20		-5	-16
gap on have	20
gap on have none	15
gap on need	22
gap on need imperative	16
gap on none none	17			-9
gap on used copula	-19			28
gap on used past	28			-8
gap on. used	-7	6
gap on. used none		13		-10
gap or none	-6	13
gap out of none	12
gap over none	4
gap plus need	-32	38	-10	-24
gap put none	-4			4
gap put none imperative	-4			4
gap so none				4
gap so none copula				5
gap so none none			-22	15
gap so none owed	9
gap so none present	20
gap so used	19		-5	-9
gap still on have	7
gap that's none	-10	-32	12	7
gap that's none copula	-10	-32	12	7
gap the need	30	-13
gap there's used		-14	27	-25
gap there's used copula		-14	27	-25
gap through none	33			-24
gap through none past	7
gap to none	27
gap to none copula	12
gap to none none	16
gap to none past	19
gap under none	11
gap up, used		-5		10
gap up, used none		-7		13
gap used, used	-24		36	-21
gap used, used past	-7		21	-10
gap used. used	26		-7
gap used. used none	15
gap w/ none			-10
gap with none				7
gap with none copula	35			-19
gap with none none	19
gap with none past	-34			42
gap with used	-7			8
group eachOf	6	-23	-16	6
group range	24	-4		-18
head 1				12
head 2 x	27	-20
head 2x4	-15	-7		18
head 3	4
head abt	17
head ac	10
head access panel	-26	21				16
head actuator	8
head adapter's		13
head adhesive	-15		7
head aerator				6
head aff	25
head air	30
head air gap	-5		19	-21
head already	10			-16
head aluminium	4	8	-14
head amps	16
head anchor	-30	-9	-6	38
head anchors	-13			6
head anti tip bracket	-25	32	-15	-24
head architrave				13
head architraves	26		-7
head arm	-13			11
head away	12
head back	22
head back door	21
head back's	31		-22	-6
head baffles	22
head bag's	25	-20
head bags	-7		18	-21
head ball	16
head ball catches	-14	15	11	-25
head ball valve	-23	21
head ballast	7
head balusters		-8		16
head band	20	-19
head bar	-19		15
head base	17
head baseboard	27	-8		-4
head basement	19	-6
head bases	16
head basin	19
head basket	-24	15	13
head bath fan	21
head bathroom				10
head batt	23	-31
head batteries	-21		-4	28
head battery	-28	9		24
head batts	-26	32		-12
head bays	40	-16		-24
head bead	5	-21	16	-19
head beam				5
head beam's	13
head bearing	6
head bed				10
head belt's		9		-8
head bench	17
head benchtop	13
head better	28	-13
head bifold					13
head birch			13	-8
head bit	55			-20
head bits	22
head blank	6
head bled	25			-18
head bless	13
head blind		18
head blinds				9
head block	-8			12
head blocking	32
head blocks	-23			21
head blue		-9
head blue tape		13
head board	-14		4	24
head boards	-24			24
head bolt				5
head bolts	-7	23
head bond	-9	14
head bonding primer	-13	20
head bone	20	-8
head boot	20
head boots	28		-23	-30
head boss	19
head bottom	12
head bowl	17
head bowls	-7	-9		15
head boxes	15
head boy	20
head bracket				5
head bracket's	52	-13
head brackets	-13		4
head brads	-23	22	-15		8
head braided lines	-6		11
head brass		10
head breaker		-4
head breakers	-21	-9	-20		15	20
head brick	-25		12	14
head brown	22	-5
head brush seal	-4				18
head brush strip	-13	23	-5	-20
head brushes	-39	13	30	-27
head bucket	21
head bulb				6
head bulbs	-39	-22		23	20
head bullnose		16
head bumpers	-17			20
head burn	21
head burner	19
head bushing	-8	16
head butt joint	24
head butt joints	8
head button					13
head bye	20
head cabinet	14
head cabinet doors	21
head cabinet pulls	-12	-10		21
head cabinet screws	-5
head cabinets		-12	13
head cables	37	-22	-10	-21
head call	23
head calls	19
head camera	21
head can lights		-7		9
head capacitor's	-4			14
head carcass	23	-10
head carcasses	15	-34	12
head card	23	-9
head carpet	46
head carpet's	35
head cartridge	-7		12
head case	19
head casements		-17		-20		18
head cat6				8
head caulk			5
head caulking				6
head ceiling	22
head ceiling fan	-4	-11		-11		22
head ceiling grid	26			-17
head ceiling tile		-16	11	-15
head ceiling white	-13	20	-14
head ceiling's	12
head cellulose				7
head cement		-5		16
head center	21	-10
head centers				15
head centres	21			-15
head chair rail	32			-19
head chairs		15		-16
head channel		11
head charcoal	-40	19	-25	19		25
head charge	9
head chase	15
head check valve	-9			17
head chime	20
head chimney	11
head chimney's	17
head chrome	-19	-32	-28	-21	17	21
head chunk	26	-7
head circuit	34
head circulator	-26	20		11
head cistern				7
head clamps	-22	23
head clearance	11
head clears	4
head cleat		9
head cleats			8	-17
head clip		6
head clips	-39		9	13
head closer		10
head closer's			14	-9
head closet	24
head closet bolts	-26	22		6
head closet doors	28	-4	-6
head closet rod			9
head closet shelf	11
head co	15
head coat	12	-14
head coat hooks				10
head cock	-14	22		-10
head coffee		17		-4
head coil	46			-31
head cold	34
head coming	14
head complaint	16
head compressor	21
head compressor's	23
head concrete	16
head condenser		-8	-19	15
head conduit strap	24
head construction adhesive	-9				13
head contact cement		23	-5
head contractor bags			8
head copper	-16	-12		28
head corbels		-19		-13	19
head cord		-4		14
head corner bead	-8	13
head corners		-16	23	-26
head cornice	4
head counter	13
head countertop	19
head couplings	-25			11
head course	21
head cove base	22	-12	-9	-28		14
head cover	-12	27
head cover plate	-11	19
head covers	-4		7	-6
head cricket	15	-6
head crown's	25
head curb	15
head curb's	28	-12
head cut	-16	-16		23
head cut out	10
head cutout	19
head damper's	14			-4
head day	7
head daylight	9
head deck mud	11		-27	7
head deck screws	-32	5		30
head deep	41
head dehumidifier	17
head delivery			8
head desk	29
head difference	19
head dime	14
head dirt	23		-18
head dishwasher	10
head dishwasher's	18
head disposal	22
head dog	9
head done	17
head door casing	22
head door closer	-13	20		-19
head door jamb	11
head door stops		-13		12
head door sweep	-24	24	17	-20
head doorway	5
head downspout				15
head draft	11
head drain	22			-14
head drain's	19
head drains	16
head drawer	11
head drawer boxes	-21		15	-10		20
head drawer front	30			-26
head drawer fronts	10		-16
head drawer slides				-10		15
head drawers	25	-4		-7
head drawing	22
head drill	24
head drip edge	30	-8		-6
head drop	44
head drop cloths	-22	-21	33
head drop ear	27			-18
head drops	28
head dry	16
head dryer	23
head dryer vent	38
head drywall anchors	-15		17
head drywall's	-21	-13		30
head duct tape		14
head due	25
head dumpster	31
head dumpster's		15
head duplex	31
head edge	19
head edge banding	-5			12
head edges	25
head eggshell	-48	16	5			10
head elastomeric	17	-4		-15
head elbow	-31	41
head elbows	-34		6	25
head electric	13
head electrical	32	-15	-15	-11
head enamel	-9	-32	41
head end	8
head end cap	-15	20
head end caps	-26	7	14
head end panel		8
head entry	24
head escutcheon		21	-8	-19
head everywhere	11
head except	12
head expansion tank	-9	21		-10
head extender	-15	11
head extenders	-38	43		-12
head face frames	30			-7
head factory	11
head fall	22
head falls	21
head fan	30
head fan's	25	-12
head fans	9	-6	9	-15
head fascia	16
head faucet						10
head faucet's	-10			21
head fault	19	-15
head fella	20		-9
head fence	16
head field tile's	-15			14
head fill		-5		5
head filler	28	-26
head filler strip	-40	33	10
head filters	-15			24
head fine	18
head finger	36	-17		-18
head finish	15
head finish coat	22
head finish nails		8
head fire caulk		23	-21	-18
head fireplace	5
head first		15		-15
head first coat	17
head flagstone		-15	15
head flame sensor	29			-12
head flange	35
head flapper	-7		-7	33
head flashing	9
head flashing tape	-18			7
head flashlight	32	-6		-6
head flat	7
head flat white	7
head flats	-25	-23	15	5
head flex	-11			10
head flight	10
head float		9
head float switch	-15	9	8	-5
head floor tile	9	-36	28
head floor's	13
head flow	18
head flue	31			-4
head foam	-21			22
head foam rollers	-33	29	-5	-13	10
head foil tape	5
head folks	16
head footings	26			-16
head forms	18
head four by four		9
head frame		9
head frames			16
head framing	12
head fridge	16
head front	6
head front door	25
head front edge	6
head frost free	10	-13	-10
head full	13
head furnace filter	-11		10
head gable	6
head gap	13
head gaps	19			-9
head gary	32
head gas	22
head gas line	16
head gate	31
head gauge		7
head get	37	-19
head gfci			15	-6
head gfi	19
head glass doors	-23	-12	9	15
head globe	-5	24
head glue's				-21
head go	24	-13
head good	24			-9
head grade	19
head grain	21
head granite	18			-7
head gravel	17		-7
head gravel's				9
head gray			4
head grease	-4
head green	16
head grid	25	-13
head grille	24
head grinder	6
head grommets	-9	-11		19
head grout			6
head grout's	-8		20	-23
head guard	-29	33	-10	-8
head guard's	-22	26
head guillotine	22
head gun	9
head gutter	8	-26		5
head gutters	6	-15
head guy	36
head guys	28	-25
head ha	11
head hair	33			-16
head halfway	-5	13		-10
head hall	-9			16
head hammer				10
head handles			5	-35
head handrail	32
head handrail brackets	23	-11	-5	-24	7
head handrail's	26			-7
head hang	19
head hanger		-20		13
head hangers	15			-33
head hangs	22
head hardware		-18	14
head hardwood		-11	6
head hatch	25
head head		-9
head header	4				6
head headroom	4
head heads	-23	9		15
head hearth			6
head heat	7
head heat mat	29	-12		-14
head heat mat's	23			-7
head heat pump	31
head heat's	13
head heater			15
head height	18
head height's	27		-8	-11
head hello	13
head herself	8
head hickory	-18	-16	21
head hidden clips			7
head hidden hangers	-26			29
head high	47			-4
head higher	17
head hinge	13
head hinge screws	-8	20	-17
head hip	6
head hit	14
head hiya	20
head hob			7	-11
head holder	-28			33
head hole	46
head holes	52
head home	6
head hood	4
head hook	27
head hooks		-25
head hose bib	35
head hoses	-11	6		6
head hot	10
head hot mud	30			-20
head hot side	9
head humidity	11
head ice and water	-38	-4	-18	38
head inside corners	25			-15
head insp	15
head inspection	10
head insulation	29
head itself	16
head j-channel		-18	-10	-18	13	18
head jack	29			-14
head jacks	-7	-10	18	-5
head jam	5
head jamb	23
head jan	-7	19		-11
head job	19
head joints	17
head joist	44		-23
head joist tape	-16			24
head joists		-7			12
head keep	10
head keeps	7
head key	17
head keys	30	-17
head kick	-14		-5	21
head kit	-54	51	10
head kitchen				11
head kitchen island	9
head kitchen sink	11
head kits	-44	21	24	-7
head knees				7
head knife	24
head knob		9
head knobs	-28		18	16
head lads	9
head lags	-16	7	-18	17
head laminate		-14		13
head laminate's	-16		14
head landing	22			-6
head latch	18
head latches						9
head laundry box	27
head laundry sink	26			-12
head lav	11
head leaves	14
head ledger	26
head left hand	-22	25
head leg		11
head legs				4
head lid	-9	18
head lift	18
head light	43
head light's	19
head lights	24
head line set	28
head lines	30
head lint	16			-4
head lip	27
head list	19
head live	-17			20
head lock		-7		5
head lockbox		-19	-6	-7	20
head locks	10		9	-22
head lol	26
head long	53
head long wall	9
head looks	9
head loop	21
head lord	21
head low	36
head lowers	-12			18
head lugs	27			-8
head luis	13
head lvl	21			-10
head machine	23	-6
head maglock	22			-7
head mailbox	27			-18
head main	11
head man	25	-15
head manifold	24	-20		-7
head mantel	-15					23
head maple	29
head marble	14			-7
head marco	15
head mastic				8
head match	6
head max	28			-9
head meantime	23
head measures	20			-7
head medicine cabinet	20
head membrane		-17		26
head meter	17
head microwave	10
head mind	11
head mini split	21
head mirror	26
head mirror's		5	-5			6
head mix	-14	11
head mixer	-7	-13	20
head mixing valve	24
head moisture	6
head moisture meter	29	-18
head morning	24
head mortar	-20	10		8
head mortar's	-17	-16	24
head mosaic	20			-16
head mosaic's	-9		-7	21
head motor					12
head mrs	13
head mud		11
head mudroom bench	23
head multi-finish	-27	20	11	-11
head myself	25			-16
head nah	14
head nail	36
head nail holes	11
head nail plates	-30	19	10
head nailer		12
head nails	-7	11
head neutral	18
head newel	9
head newel post	7
head niche	15
head nickel	13
head night	24
head nipple		22		-24
head nosing						13
head numbers	-11	-15	20	-12
head nut	6
head nuts	-11	16		-5
head oak		-23
head ofc	14
head old	11
head one	16
head one's	19
head ones	26
head only	24
head open	16
head opener's	24
head opening	21
head opening's	15
head order	7
head outlet	48
head outlet covers	-9	-7	-28			21
head outlets	14			-9
head outside	-34	36		-5
head oven	24
head overhang	17
head p trap					11
head p-trap	-9			20
head packing	-11			14	4
head pad				16
head pads	-17	21
head paint	14
head paint's	29
head pan	-12	20
head pan's	18
head pane		8
head panel's		17	-15	-27
head paper	10
head paper tape		21	-13	-15
head parlor	7
head part	22
head part's	13
head particle board	18	-5
head pass	26			-9
head passed	9
head paste	-17				17
head patch		-9	20
head patio door				13
head pavers	6		-23
head peephole	20
head penny round	-4	-23	22	-31		10
head pete	6
head pex	-20	-14		28
head phone	11
head photos	22
head piano hinge	-16	7	-5	12
head pickets	-27			5		22
head picture	27	-6
head piece		-13	17	-11
head pile	7
head pins		26	-9
head pipe's	26			-16
head pipes	38
head pitch	21			-4
head pivot	21
head place	12
head plank	24	-9		-8
head planks	-29		32
head plaster	16	-9
head plaster's	10
head plasterboard				-20	19
head plastic	25
head plate	-15			19
head plates	-38	14
head plenty	38		-26
head plinth	18
head plinths	-13	-8		23
head plug's	22	-7
head plugs				5
head ply			5	-15
head plywood's	-23	5		18
head pocket door	25
head poly				5
head poplar		-12	13
head post	23
head posts		-31	-10	36
head prehungs			14	-5
head press	16
head pressure	31			-16
head pressure's	4
head primed				6
head primer	-17	7	11
head print	22	-6
head profile	-6	16
head prv	-16	19			10
head pull	35	-6
head pulls		-13
head punch	9
head purple board		5	-15
head put	28	-13
head putty	-9			27
head pvc	-42	9		46
head quiet	23
head quikrete	14	-10	-4
head rack	24
head radiator	29
head radiator cover	11
head rafter	25
head rag	19
head rails	-6			10
head rain	18
head range	24
head range hood	-20		30
head rapid set	-22		19	-15
head read	9
head rear	19
head receipt	33	-23
head receptacle	18
head receptacles	-13	-12	-5	14	12
head red	15
head red oak	28	-18
head reducer	-23	28
head register	4
head regulator	-12		-12	16
head relief valve		13
head relief valve's	26		-5
head remote	26
head render	11	-7	9	-15
head rental	28
head repair kit		14
head replacement	39	-32		-5
head return	9
head reveal	19
head rh	28	-12
head right	31	-14
head rigid	-6			23
head rim	-4			14
head ring	-34	12		28
head rise	25
head riser	16
head riser's	25
head risers	52	-34	-5	-24
head rm	6
head ro	18
head rock	37
head rocks	13
head rod					7
head rods	-51			33
head roller	-5	27		-19
head rollers	11	-15			6
head roots	15
head rosette		7
head rough			11		-13
head round	45	-9		-10
head row	17
head rubber	-25	14
head rudy	9
head run	50
head runner	-16	21	-7
head runs	26		-18	-17
head rush	11
head sage		-15		13
head sample	30	-16
head sand	16
head sand paper		22	-8	-8
head sandpaper	26	-9		-15
head sandstone	22	-5		-5
head sandwich	17
head sash	-20	32
head sash cord	-17	23		-9
head sash cord's	18	-15		-8
head satin	4	-24	10
head saw	19
head says	24
head sconces					7
head screed	13
head screen	-4					16
head screen door	10	-21
head screen's	26			-10
head screens	-14	20		-6
head screwdriver	28
head screws	-9			34
head scribe	-5		14
head scribe molding		-19	21	-14
head seal	-9			15
head sealant	-33	21	11
head seam	6
head seam's	29	-6
head seams	34			-11
head second	9
head second coat	18
head self leveler	-22			30
head self-leveler		-17	5
head semi gloss	-17	10	-9	12
head sensor	-21	12	13
head sheathing	9
head sheet	24	-6
head sheet rock	-8	-14	6	-17	18
head sheet vinyl	29	-12
head shelf brackets	-30	27	-14	9
head shelf pins	-15		-8	25
head shellac	8
head shellac primer	-5	-11	21	-20
head shelves			-10	18
head shim		7
head shims	-43	13		16
head shingles	17		6	-18
head shoe		13		-15
head shoes	24
head shower	25
head shower pan	18
head shower walls	24			-15
head shows	16
head shut off	31	-11	-5
head shutoff		5
head shutters		-12		9
head side	14
head sides	43			-26
head siding		-18
head sign	31			-19
head sill's	14
head sink	42
head sink base	8
head sinks	-6	16
head sir	12
head sits	22	-7		-12
head skim	21	-11
head skip	15
head skirting	-9	6
head skirting's	-12	13		5
head slab's	-14					19
head slabs	-20	-21	21	-15		12
head slate	10
head slats		14	-17	-27
head slatwall	-7			4
head sleeve	28
head slider	17
head slip	24	-20
head slope	7
head slow	15
head smoke	18
head smoke alarm		12
head smoke alarms	-33	18		17
head smoke detector	14
head sockets	-15	-38	9	16
head sod				13
head soffit	41	-6
head soffit vents	37			-21
head soffit's	31	-5
head soft close	21	-13
head somewhere	18
head sorry	10
head spacer	-8	-11		21
head spacers	-6			19
head spec	23
head spindles	28			-16
head spins	5
head splice	15
head sponge	-31	34
head spots	24			-21
head spout	-27	36	-14	-17
head spring	26
head springs		-20		12
head square	11	-10
head stack	35	-13	-13
head stain	42	-26
head stain blocker			-12
head stainless	-7	18		-12
head stair	14
head stairs	7
head standards				8
head standpipe	15
head stands	13
head staple	16	4		-24
head staples	9	-16
head stat	15
head static	22
head stays	7
head stem	5			-9	5
head step	16
head steps	10
head stile	17
head still	19		-11
head stone	-5			14
head stone's	-5	13
head stones		22	-14
head stools	17
head stop	31
head stops	-28		19
head store	25
head storm door	-38	10	21	-20		23
head stove	9
head straight	19
head strainers	-11			21
head strap	-16			27
head straps	-5	25		-10
head street		4
head string	26
head stringers	10	-21
head strings	36	-8		-28
head structural screws	-53	35		21
head stub	7
head stub's	13
head stucco	7
head stud	25
head studs	7			-10
head stuff	-17	20
head subfloor	18	-19		-14
head subfloor's	28		-4
head suction cup		12
head sump	11
head supplies	14
head supply line	-18		-7	-22	23
head supply plenum's	4	5		-6
head supposed	20
head swab	-8	10
head switch	13
head switches		-13	-11	6
head tack strip	25
head tack strip's	10
head tag	34			-21
head tailpiece	-25	19	20	-18
head tank	-12	16
head tap	26		-10
head tapcons	-36	32		12
head tape	-5	5
head tarp	-8	6		6
head tee	-24			21
head temp	18
head template	20
head tester	-20	29
head thermostat	25
head thick	26
head thin set	5		9	-15
head thing	9
head things	41	-19	-12	-33
head thinset	-13			11
head third	32			-13
head tile's	23
head tiles		-16	25	-19
head toe kick	23
head toe kick's	11
head toggle bolts	-4			-14	23
head toggles	-47	41		13
head toilet	5
head toilet flange	26			-6
head toilet seat				5
head toilet's		10		-4
head top pivot	-15	23
head towel	14	5		-22
head towel bar	-34	-19	-18	-28	23	20
head track	43
head track's	17
head traffic	15
head trailer	17
head transformer's	-8			5
head transition	20
head transition's	15		-7
head trap arm	19
head trash pullout	24	-6
head travelers	15
head tray		13		-7
head tread	28
head treads		-4
head trench	10
head trim	13
head trim screws	-17	-10	9	7
head trim's	20
head trims	36	-14		-11
head truck	32
head trunk	21
head tub drain	22
head tub's	22
head tubes	-29			24
head turn	23	-12
head two by eight	12	-4
head two by four	-38	13		37
head two by six	22	-4		-18
head two by ten	7			-8
head type s		-8	6
head underlayment		-29	11
head undermount clips		5	-8
head union	-11	29		-14
head upper		-8	-14	14
head uppers		-7
head upstairs	-5		-24	19
head upstand	12
head ute	23
head vac	20
head vacuum	7
head valve	13
head valves		12		-12
head van	26
head vanity top	11
head vanity's	15
head vapor barrier		10		-9
head varnish			-8	24
head veneer	16		-10	-25
head vent	5
head vent stack	22	-8		-5
head vinegar	14
head vinyl plank	-13		8
head vinyl's	28				-18
head wainscot	15
head wait	31	-7
head waits	14
head walk	11
head wall	10
head wall bend	9
head wall tile	23	-31	13
head wall's	5
head wallpaper		-19	25	-22
head walls	53			-17
head walnut		-7	15	-20
head wants	6
head washer	-25	6		23
head washers	-48	53	-8
head water	27
head water heater	18
head water heater's	30	-8		-12
head wax	-31	9	7	5
head wax ring	-49		23	24
head wax rings	-10	-7	16
head wc	30
head weight		-8	10	-7
head weld	17
head wet saw	22
head what's	31	-14
head whip	-9			15
head white	9
head whoever	28	-5
head wide	28
head width	14
head window	16
head window stool	23
head window's	20
head windows				8
head winter	13
head wire	18
head wire nuts		-20	-19	12
head wire's	-10	20
head wires	50	-24	-6	-35
head wood				15
head wood filler	-26	26	-22	12
head wood glue	-29	25	-26
head wool	-10	-18		11
head work	11
head worktop	-8		24
head wrench	30	-21		-8
head wrong	-5	17
head x	35			-7
head yet	17	-6
joined and none				8
joined and owed	8
joined comma modal	7
joined run-on none	14
joined start none	25
joined start owed		8
joined start present	25
joined word imperative		7
kept			37
last cue bought other	-8	21
last cue bought same	-14	8		-11	29
last cue need same		8
last use buy imperative same		7		-7
last use buy owed same		-15	12	-17
last use buy past other	14
last use buy past same					14
last use buy present other		12	-7	-5
last use buy present same	11	-18	-18	-15	14
last use have imperative same		16
last use measure imperative other		18
last use measure imperative same			7
last use measure modal other	-16		22
last use measure owed other	4
last use measure owed same	12			-5
last use measure past other	-19			31
last use measure present other		-7	15
last use measure present same	4
last use move imperative other				-6
last use move modal same	16
last use move owed same		6		-8
last use move past other	8
last use move present same		6
last use need modal other	17
last use need modal same	-19	17	13
last use need owed other	8
last use need past other	19
last use need present other		15	-14	-11
last use null imperative other	20
last use null imperative same	26			-7
last use null modal other		6
last use null owed other	14
last use null present same	-7	18	-19
last use other owed same		23
last use other past other	10
last use other present other	18
last use return past other	22
last use say owed same	29
last use say present other			7
last use see imperative other	-7	-7	8	-15	16
last use see modal same	28
last use see owed same	14
last use use imperative other	-25					26
last use use past other	14
last use use past same	-9		10	5
last use use present other	19
last use use present same			5
last use work owed other		14
last verb add same	-13	-9	8	9
last verb adjust other	25
last verb adjust same	19
last verb arrive same	-8	-26	33	-26
last verb ask other	4
last verb ask same	48	-6
last verb blow same	-4		-6	9
last verb bolt same	-7	-28	-6	7	20
last verb borrow same	-13	22		-18
last verb box same	-10	-6		19
last verb break same	-20	5	14
last verb bring other	13
last verb bring same	5
last verb build other	20
last verb build same	25			-5
last verb buy other	17
last verb buy same					4
last verb buzz same			-5
last verb call other				10
last verb call same	-20		12
last verb can same		8
last verb can't same	21	-5
last verb cap other			11
last verb cap same				8
last verb catch same	16
last verb caulk other	21
last verb caulk same	10
last verb change other	-7	25		-11
last verb change same		-10		14
last verb chase same	-7
last verb chuck same	-13		19
last verb clamp same				6
last verb clean other	27
last verb clean same						12
last verb clear other	16
last verb clear same	31			-18
last verb clip same	38	-19	-10	-26
last verb close same	-6		19	-19
last verb come other	18
last verb come same	6
last verb consum same	-5	-18		21
last verb core same	-28			33
last verb could same	14
last verb count same	-4	7
last verb cover same	-5	23
last verb crack other	24	-16		-15
last verb crack same	-18	17
last verb crush same	6
last verb cut other		-6
last verb cut same	-7
last verb deliver same		-21		13
last verb dial same	16
last verb didn't same	13	-18
last verb die same	20	-8		-8
last verb dig same				10
last verb do other		-8	7
last verb doesn't same	19	5		-28
last verb drain same		-10		15
last verb drill same	16	-21
last verb drive same	-6			15
last verb drop other		6
last verb drop same	24
last verb dump same		5
last verb eat same	17
last verb email same	12
last verb end same	11
last verb exchange other	16
last verb feather same		15
last verb feed same	-7			17
last verb figure same			19
last verb file same	-30			24
last verb fill other	-4	-8	20	-9
last verb fill same	15
last verb find other	-32	-9	14		24
last verb finish other				12
last verb fire same	-11	17
last verb fit same				10
last verb fix same				15
last verb flash other	11
last verb flash same	6
last verb flip other	-16	22
last verb float same	-11	17
last verb flush other	5
last verb flush same	28			-10
last verb foam other	-19	19
last verb foam same	19
last verb forget same	19	-16
last verb frame same	-14	13
last verb fre same	21
last verb give other		-9		9
last verb glue other	18	-22
last verb gotta same		8
last verb grab other	17
last verb grab same	6	-8			12
last verb grout same	-14			14
last verb guess same	5			-5
last verb hand same	-23			15		19
last verb hang same				18
last verb has other	5
last verb he'll same	17
last verb hit other		5
last verb hit same	6	-9
last verb hold other		-15		8
last verb hose same	14
last verb hum same						17
last verb install other		12	-8
last verb keep other	14	-5
last verb kick same	26
last verb knock same				9
last verb know same		-6	10
last verb land other	16			-15
last verb land same	-15		13
last verb latch same	11
last verb lay same		4
last verb leak same	18
last verb lean same	8
last verb learn same	28			-16
last verb let same			12
last verb level same				7
last verb lift same	4
last verb like other	12
last verb look other	-8				17
last verb look same	23
last verb love same	7
last verb make other			13
last verb mark same		10
last verb measure other	-29		-8	18
last verb measure same	39			-9
last verb meet same	7
last verb meter same	28			-9
last verb miss same	7
last verb mitre same	24	-9
last verb mount other	31	-5	-6	-14
last verb move other	-14	22
last verb move same	35
last verb must same	25
last verb nail same		6
last verb need other	22
last verb need same		19
last verb notch same	32
last verb notice same	22	-7
last verb open other		6
last verb open same	8	-12
last verb order same				-14
last verb owe same		14
last verb own same	22
last verb pack other	9
last verb pack same	4	-36		9
last verb paint other	11
last verb paint same	13	-15
last verb pass other	10
last verb pass same			-9	-9	27
last verb patch other	-12		14	-17
last verb patch same	-4			4
last verb peel same		-14	15	-6
last verb phone same		8		-7
last verb pick same					8
last verb pin other	11
last verb pitch same		5
last verb place same	-11			17
last verb plane other	15	-18	4	-12
last verb plane same	19
last verb plug same	5
last verb plumb same				6
last verb point same	-14			18
last verb pop same	12	-11	11	-29
last verb pour same	-18	30
last verb prime other				11
last verb prime same			13	-20
last verb promise other	-8	-9	23	-10
last verb pull other	-9			19
last verb pull same	-5			14
last verb pump same	5
last verb push same	7		-24
last verb put other				11
last verb rack other	28	-10	-8	-10
last verb rake same	-16	13		7
last verb rate other	9	-13	-15
last verb rather same	14
last verb reach same	-7	13
last verb read other	-26		30	-23
last verb read same				4
last verb redo other	18	-8
last verb redo same	-13	11	10	-14
last verb refasten other	19
last verb reglue same	23			-10
last verb rehang other	25	-5
last verb rehang same	17	-6
last verb repair same	-16	11
last verb replace other	-21	18
last verb replace same	-26		14	11
last verb require other	21
last verb require same		27	-42	-27	-7
last verb return same		9
last verb rip other		11
last verb rip same	36			-7
last verb rock same	7
last verb roll other	15
last verb roll same				14
last verb rough same	6
last verb run other			-9	7
last verb sand other	18	-14
last verb sand same	-10
last verb say other	15
last verb say same	19
last verb scrape other		16
last verb screw other	18
last verb scribe other	13
last verb seal other	14
last verb seal same	11
last verb see other	9
last verb send other			12
last verb send same	6
last verb set other		-10		9
last verb shim same	-5			19
last verb short same	32	-20		-6	-7
last verb show same		19
last verb shut same	21
last verb silicone same			-17	15
last verb sister other	24
last verb sister same	7	-27		5
last verb sit other	-22	-13	19	14
last verb size same		14
last verb skim same	16
last verb skin same	7
last verb slide same	15	-19
last verb slit same			12	-18
last verb smell same	20
last verb smooth same	-14	-18		23
last verb snake same	26
last verb snap same	5
last verb snug same		13		-7
last verb sort other	7
last verb spend other		5
last verb spend same				10
last verb spin same		4
last verb splice other	15			-14
last verb spray same	31			-12
last verb square same	17			-10
last verb squeak same		9
last verb stand same	22
last verb start other	30	-13
last verb start same		-11		8
last verb stay same			13
last verb stick other		7		-10
last verb stop other		7
last verb stop same	-11				16
last verb straighten same	-15		-18	-22	24
last verb stretch same	6	-17		4
last verb strip other	-12			16
last verb strip same		5
last verb stuff same		-6	-6	18
last verb supposed other	16
last verb swap other	-5		14
last verb swap same	7
last verb swear same	21
last verb sweat same	12			-15
last verb take other		5
last verb tap same	23	-6
last verb tape other					11
last verb tape same	32			-8
last verb tear same	28
last verb tell other	-12		8	11
last verb test same	5
last verb text same	-4			13
last verb they'll same				7
last verb think other			-8	6
last verb think same	-13	6
last verb throw other	10
last verb throw same		4
last verb tie same	31	-4		-19
last verb tile same		18
last verb top same	25	-6
last verb touch other	-13	21		-4
last verb touch same	17
last verb trace same	6	-13		4
last verb trim other		16
last verb trim same			-6	8
last verb trip same		8
last verb try same	14		-19
last verb turn other	11	-7		-8
last verb turn same			8	-12
last verb use same			9
last verb vacuum same	36			-25
last verb wait other	15
last verb wait same		14
last verb wanna same	-15				15
last verb want other			7	-10
last verb wash same	16
last verb weep same		11	-10
last verb wipe same	18
last verb work same	21			-12
last verb would same	11
last verb wouldn't same				8
last verb wrap same				11
last verb wrote same				6
left 
	20
left 
 *			14
left 
 •					13
left # N	-7	16
left # alright	15
left # attic	13
left # dining room	13
left # garage				7
left # hall bath	-6		17
left # kitchen				8
left # ok	16
left # okay			6
left # pantry	18
left # so	15
left &	-10			11
left '	9
left (	-6		-5
left ) ,	-8		6	-26	15
left ) .	28
left *			14
left +	-12
left , G	-5		8
left , N	19
left , Q			7	-14
left , about			-11
left , all		-7
left , and		20		-23
left , bring	8
left , buy	-32	37
left , for	16
left , get	-35	41
left , have		-22	13
left , in	6
left , is				8
left , need		23
left , now	30			-13
left , order					18
left , pull	27			-7
left , run	32			-26
left , the		-16	20	-21
left , then	18			-5
left , use	16			-8
left , want	14
left - get	-24	27
left - need	-11	18
left . G	42	-20		-8
left . N	15
left . all	-33	-18	-15	40
left . also		21	-18	-14
left . and	-4	29	-18	-14
left . bring	-5	9		-7
left . but	25
left . find	-6			15
left . for	17
left . get	-40	15	28	-20
left . grab	9	-8		-12	14
left . hall	6
left . have		-5	24	-9
left . i	5
left . in	25
left . kitchen	-9	16
left . leave			8
left . need		9
left . on	10
left . order		38
left . short	-22	37
left . swap				6
left . there's	20	-13		-7
left . use	-23			51
left /	21
left 1 /	11
left : G	-27	23	-19	12
left ?	14
left @	30
left G &	-21	15		14
left G (	26	-14	-6
left G +	-12	15
left G -	-5	18	-7	-9
left G G		-20		20	5
left G Q		39	-17	-26
left G T	12				-4
left G about	32
left G and	-7
left G are	16
left G be	16
left G because	13
left G before	12
left G behind	5
left G but	24			-11
left G by	8
left G down	-12	-10		18
left G for	37
left G from	5
left G has	27
left G have	35		-7
left G in	7
left G is	34
left G it's	28	-5
left G leave	29		-10
left G miss	14			-12
left G need		18
left G not	8
left G of	35	-6
left G off	9
left G on	10
left G or	27	-7
left G over	10
left G set		-8	-19	7
left G so	-28	36
left G take				5		-5
left G that's	-20	-7	6	16
left G the	37	-9		-15	-6
left G there's		-14	18
left G to	23
left G use	-28			32
left G want		12
left G where	16
left G with	23
left G wouldn't	5
left N ,			-13	8
left N :				23
left N and			-4		12
left N by	7
left N for		6		-15
left N in	25			-10
left N of	-5
left N so		-10		6
left N with				13
left Q 
	-22	29		-13
left Q +	5			-5
left Q :	-32	-38	4	14	17
left Q ;	-18	14		10
left Q @	5
left Q G	-6
left Q Q	27
left Q above	10
left Q and		9
left Q at	9
left Q because	4
left Q before	10
left Q but	10
left Q by	36
left Q deep	7
left Q for	21
left Q from	16
left Q get	-12	28	-10	-11
left Q have	-8		14
left Q in	38
left Q need	-13	23
left Q of	26
left Q off	26
left Q on	29
left Q over	33
left Q screw	22	-15
left Q so	28
left Q then	15
left Q there's			16	-16
left Q through	33			-29
left Q to	31
left Q toward	6
left Q under	23
left Q where	12
left Q with	8	-22		4
left T ,		19		-8
left T .	7
left T :	-4	7	-28	-30		23
left T Q		-22	19	-19
left T after	7
left T and	8
left T between	19	-13
left T for		6		-6
left T if	13
left T in	17
left T need	-20	28
left T then	13
left T there's		13
left T to	22
left T with		29	-5	-27
left a					16
left a G	34	-22
left a Q	5
left above	11
left across	18
left add				9
left adjust	7
left again	8
left again .	21
left again with	-34	-13	-5	39
left against	20
left all				26
left all but	15
left all in	-8	-16		19
left along	21
left already	15	-5
left alright	15
left also		22		-21
left and G		-29	-16	-27	25
left and about	-35	21	-31	18
left and after	5
left and bring	-18	27
left and get	-5	19		-5
left and half	-16	7	14	-14
left and hang	-35	6	23
left and have		-9	17	-20
left and i'm		12
left and in	12
left and it	18
left and it's	20
left and now	5
left and run	21			-9
left and the	-26	6		22
left and then	17
left and there's			18	-11
left and use	-34			39
left anyway	17
left are	32
left are in	-6	-14		26
left are on		-5
left around	24
left as	35
left ask	17
left at	23
left at N	7
left at Q				9
left attic	16
left away	13
left b :				16
left back						15
left back in			15
left back of	23
left back to	28
left back with		13
left bad	12
left bakery	5
left balcony	12
left bar	5
left bare	15
left basement	15
left bath	10
left bathroom	9
left be on	5
left because	21
left because there's	19		-10
left bedroom	16
left before	21
left before T			13
left behind	17
left below	9
left bend	19
left bend ,		11
left beside	16
left between	31
left black		6		-6
left blow				10
left bolt .	7	-12
left book say	18
left boss	5
left bottom	9
left bottom of	24
left box	26
left br	-6	-8		15
left bracket	-15	-23	24	-8
left break		13
left break ,	14
left break in	13
left bring		9
left bring back	-15		6			17
left bring me	-21	28
left burn		-7		18
left burn through	-6			21
left buy	-16	9			5
left buy :	-13	32	-7	-10
left by	19
left by Q	33	-4
left by T			15	-13
left c	9
left call	10
left call for	31	-7
left call it		6		-8
left can				6
left can't	5
left can't get	23	-9
left catch	-12	16
left caulk	9
left cause	6
left ceiling				13
left change	-8	8		6
left check	6
left chip				11
left chip on	9
left choose	9
left clean	13
left clean .	20
left clear	15
left clip	-26		8	7
left closet		-10	15
left closet :				14
left come	-5		6
left come T	-16	-22	-24	-20	31
left come in			18
left come out	24
left come up	36	-19		-10
left come with	14
left corner ,			-11	6
left corner .	-13	-10	23	-21
left corner by	4
left corner to	9
left count	-18	10	20	-25
left cover	14
left cover .	15
left crack	-7
left crack from	8
left cut .	19
left cut in				10
left cut out	18
left dead	15
left dead ,	-6			16
left dead as	6
left deep	7
left deep and	-4		17
left den	7
left dig	14
left dining room	9
left do ,			-19	5
left do .			9
left do :	21			-6
left do and				-24		18
left do on	10
left down				14
left down ,	-14	-5		17
left down and	6
left down from	27
left down to	-7	-23	41	-39
left down with	38	-5		-26
left drill	20			-5
left drip	22
left drip ,				7
left drip on	16
left drive	-7	-9		22
left drop .	18
left dry .	38
left each .				16
left eat	-8			30
left em		16
left em and	9			-4
left end	15
left end of				6
left enough	14
left entry	11
left every time	5
left exam	20
left except						15
left extra	30	-26
left feed	9
left fifth	23			-5
left figure		23	-14	-20
left fill	20
left fill with	-30	-10	-5	41
left finally get	23
left find	5
left fine	14
left fine .	29
left finish ,	-10	-19		24
left first		16		-11
left fit		-5		10
left fit ,	-21		-4	22
left fix ,		12		-16
left flash .		15	-5
left floor			7
left floor ,	12
left floor .	29
left floor and	28
left flush	20
left foam	-6	-12		24
left for it	18	-9
left forget	-6	14		-5
left frame		12
left from	10
left full of	20
left get	-5		10
left get its				17
left get me		19
left get to	13
left give	24
left give me	-6			-6	18
left glue	25
left glue and	-22	-16	-8	29
left go ,	-22	6		4
left go .		-6
left go and			17
left go back			17	-7
left go in	11
left go on	21
left go through	-33			61
left gonna need	14	-8
left gonna want	-9	20
left good			9
left good .	6
left gotta	6
left gotta be	11
left grab	-6	8			10
left grab me	8
left gray and	-27	15	7
left grind	-9			16
left half	-18		25	-9
left hall	10
left hall :	31	-15		-26
left hall and		13
left hall bath			14
left hallway	13
left hand		-4	12	-16
left hand .	-16	14	-14	-20	15
left hang ,		-9	-11	25
left hang .	20
left hang and	22
left hang by	31			-10
left hang on	-10	10
left haul	12
left have in	19
left have only	11	-9
left have to	11
left he	10
left he need	-19	26
left he want	22	-13
left he'll want	-10	23
left he's get			7
left here	-27	-16	33	-16
left hi	9
left him	4	5		-12
left hit	23
left hold	17
left hold .				5
left hole in	15
left hook up	10
left house	13
left how	11
left i	9
left i bring	-4	-8	-7	-13		23
left i buy	-8	-14	-7		27
left i change	-17			30
left i count	-6	12		-19
left i cut				5
left i do	20
left i drill	5
left i drive	-28			32
left i figure	29	-20	-21	-13
left i find	16
left i finish	18
left i get	-10		29
left i hang	-7			21
left i have	-18		51
left i hold	7
left i lay	-8			16
left i leave	-9		16
left i make	11
left i open	28			-17
left i opened up	4
left i paint	8
left i pull				8
left i put				24
left i run	-12			27
left i set	-13			28
left i sister				6
left i stick	-8	-6		16
left i swap	-39			44
left i take	-20	-18	-6	15		15
left i use				24
left i want		4		-6
left i wash	17			-9
left i will	6
left i'd like	-36	39
left i'd say		8		-13
left i'll bring	-5	13
left i'll need	-9		19
left i'll want	-28	33
left i'm		10		-14
left i'm at	15
left i'm on	-8		18
left i'm short	-15	24		-9
left i've		13	-4	-17
left i've get	-20	-9	45
left i've put	15			-6
left if	13
left in ,	5
left in Q				10
left in about	26		-9	-19
left in at	22
left in but						18
left in for	9
left in it	11
left in the				-9
left in there	8
left in with		9		-7
left inside		6
left inspector want	21	-5
left instead of	14			-8
left insulate	15
left into	31
left is at	10
left is for		13
left is in			13	-9
left is on	15
left is only	12
left it	8
left it ,	19
left it .			15	-11
left it T		-14		10
left it and				9
left it at	25
left it be	30
left it before	7
left it by	21	-17
left it for	-24	21
left it from				10
left it have	21		-11
left it hold	17
left it in				21
left it on				9
left it out	-17			20
left it run	23
left it so	-4	17
left it take		-9	-12	19
left it to	39			-4
left it up	18	-12		-6
left it want	9	-6		-9
left it with				19
left it's get	-8		-22	11
left it's in	23	-11
left its last	19
left job				10
left just need	5			-5
left keep	19
left kill	4
left know	7
left land	17
left last of	-35	-13		42
left laundry	21
left lay	-11			25
left lay in	-12	10	10	-25
left leak .	20
left leave .		-5	-5	15
left leave and	16
left leave in	12
left leave is	-27		30
left leave of	20
left leave on	10
left level .	10
left lift	8
left like	10
left little	5
left living room	23
left long	18
left look	6
left lose	26
left make	42
left make it	-7	13
left man	8
left master	4
left master bath	8
left match	12
left maybe	-10		32
left me		19
left me is	25
left me up	-23	35		-7
left measure	10
left meet	8
left miss		11
left miss ,	15		-5	-18
left miss at	6
left miss from	-29	32
left mix		-5	-5	17
left more than	10
left move	19
left mud and	15		-5
left mudroom	6
left must be	9
left n	14
left near	20
left need		20
left need .	5
left need G	-5	11
left need to	20	-11
left nick	9
left no	34	-19	-14
left no have	23
left nobody	9
left nos .	31			-12
left not	25
left notch	14
left now and	-13	-8	8	8
left number N	16
left of Q	14
left of em	-5	15
left of the	24	-22	-17
left off	15
left off ,	21			-5
left off .		-4
left off with	30			-8
left office	9
left oh	36			-6
left ok	29			-9
left ok ,	-7	-17		20
left ok .	30
left okay so	20
left old	25			-13
left on	4
left on ,		-22	-7	20
left on G	27	-9		-8
left on and				-8		17
left on every	23
left on in	19
left on it	-19			15
left on the			-5
left on with	-18	-14		27
left once	6
left one's	21
left ones	27	-12		-12
left only		-15	16
left only .	16
left only get	-40	-18	41
left only have	-35			30
left open ,	-21	-15	19
left or		6
left order		15			7
left order ,		-15	7		13
left out	7
left out ,	11
left out .	16
left out T	14
left out of	26
left out with	-15	-13	-11		27
left outta	31	-10
left over	27
left over ,	19	-19	-18
left over by	13
left over to	21
left owe	-9	15
left pack				14
left paint	34
left paint .	9
left pantry	22
left past	20
left patch	19
left pick	14
left pick up	-31	12		-13	37
left piece of				5
left place	-16	-6		20
left place .				11
left plane	7
left plate say	-17	22	-4
left please .	21
left please order		6
left plug	21			-7
left plumb	17			-5
left plus	-23	25
left point	19
left pop	12
left porch	12
left pour	-18		-7	24
left prime		-14		12
left pull	5
left push	8
left put				5
left put in	-33			37
left quick	21
left rate	10
left reach	13
left read	16
left ready for	8
left replace	-12	6	-5	11
left replace ,	35	-13		-28
left replace .	7
left require		7	-14	-14
left rest	-33	-26	38	-21
left return	-8	-19		-17		26
left right	-5	14
left right down	17
left right so	15
left right through	12
left ring	14
left rip	6
left rm :	-6			13
left roll	6
left round	6
left run ,	5
left run .	11			-16
left sand	-17		8			10
left sand ,	22	-17		-15
left say	7
left scrape	10
left scratch			13
left screw				11
left screw ,			-4	16
left screw and	14	-16
left screw in	-20	21
left screw to	15
left scribe	31
left seal	17
left seal .	23
left see	8
left send	-13	12				12
left send is			13
left set				15
left set ,	31			-12
left set .			5
left set in	17			-11
left she	11
left she want		11
left she's get	-9		13	-12
left shed	-8			16
left shim	4
left shop	-13	-13	-16			22
left short	-21	24		-5
left short .	31
left short by	-16	25
left short of	-11	17
left short on	20
left should be	18
left shut	5
left shy of		-10		9
left side ,		-29	-22	27
left side .	29			-11
left sign	-10		20
left silicone		-24	14	-6
left silicone ,	-17		11
left since	15
left sister		-5
left sit		6
left sit in	10
left sit on	17
left smell like	16
left snap	12
left snug	11
left so		12
left so bring	-29	29
left so buy	11	-5
left so get	-18	36
left so grab	15	-6
left so it's	-10		18
left so leave	6
left so that's	-17	22
left so there's	-23	-15	27	-9	14
left so throw	-29	32	-7	-7
left somebody run	27
left sort	17
left sound like	21	-8
left spend	-19	-15	-16	30
left split	10
left stack	-13	-9		21
left stairs	-4			13
left stand		11
left start	6
left stick	-9			14
left still			21	-7
left still get	-6		29	-14
left still have	-16		35
left still in		-21	14	-5
left still need		14
left still owe	23	-4
left store	-6		-15	-20	16
left strip	23
left stuff	-14	15
left supply	22	-13		-10
left swap	-10			39
left swap .	18
left swap for	-18	25
left take	-14					19
left take me		-6	-4	17
left tape	4
left tape ,		-20	-23	26
left tape .	6	-9		-13	16
left tape get	-27	16	12	-11
left test	5
left test .	18
left than	17
left that	-9		14
left that N	27
left that and		17
left that be	-9	-19	-9	24
left that eat				21
left that want		8
left that with	-8			21
left that's	-12	7		12
left the		-4
left the G	18
left the kitchen	27			-8
left the lady want	-21	23
left the last	16		-7
left the office	5
left the other		21	-8	-9
left the right	-13	18
left the tile	-17	21		-11
left the truck			12	-5
left the wrong	10
left them					12
left them ,	17
left them .	26
left then	17
left then .	-17	-15	18
left then i	16
left there .		-5		5
left there and		-19	-14	20
left there be	17
left there is	-15	-17	28	-14
left there so	9
left there's			24
left there's only		-18	22	-26
left they want	-6				15
left they're	28			-13
left thing		-10	18	-5
left third	12
left those		-9	8
left those and		34	-4	-16
left through				28
left throw	-36	29	-4	4
left tighten	20
left tile		15
left tile ,	-10	-9	22	-7
left till	13
left till T	15		-5
left to	7
left to be	17
left to bring	10
left to buy	9
left to do	23
left to get	20
left to have	-22	25	-6
left to move	18
left to pull	7
left to put	-36	33		12
left to see	7
left too		13
left too .	22
left too so	-23	10	-20	7
left top and		7
left top of	18
left touch	8
left trim	15
left truck			12	-5
left truck .	26			-18
left truck eat	14
left try		-13	15	-11
left turn	25
left turn out	15
left under	26
left under it		16
left unit N	19
left until	19
left up ,	-11
left up .	27		-15	-28
left up and			5
left up at	7
left up from	19
left up in	23
left up on	-21			32
left up with				14
left us	-6	25
left use				27
left use ,	-8		37	-28
left use .	27		-5
left use about	-26	-10		39
left use up	-29			31
left wait on	-11	23
left wall	20
left wall ,	-6		-10	17
left want		7
left wash	17
left we	15
left we do	11
left we finish	19			-6
left we have			7	-4
left we need	-35	45
left we use	-10			43
left we want	-28	31
left we're		10	-15	-12
left well		10
left wet	6
left what	17
left when	14
left where	15
left which	13
left white		12
left why	9
left wide and	23
left will	5
left wire ,	-19	28		-6
left with				8
left with Q	21			-7
left with the	-12	-5	16
left without		7
left won't	7
left wrap	13
left yet .	-12	21	-11	-17
left you	19
left you want	28	-4
left your	14
left •					13
left1 
	20
left1 &	-10			11
left1 '	9
left1 (	-6		-5
left1 *			14
left1 +	-12
left1 /	21
left1 ?	14
left1 @	30
left1 a					16
left1 above	11
left1 across	18
left1 add				9
left1 adjust	7
left1 again	8
left1 against	20
left1 all				26
left1 along	21
left1 already	15	-5
left1 alright	15
left1 also		22		-21
left1 anyway	17
left1 are	32
left1 around	24
left1 as	35
left1 ask	17
left1 at	23
left1 attic	16
left1 away	13
left1 back						15
left1 bad	12
left1 bakery	5
left1 balcony	12
left1 bar	5
left1 bare	15
left1 basement	15
left1 bath	10
left1 bathroom	9
left1 because	21
left1 bedroom	16
left1 before	21
left1 behind	17
left1 below	9
left1 bend	19
left1 beside	16
left1 between	31
left1 black		6		-6
left1 blow				10
left1 boss	5
left1 bottom	9
left1 box	26
left1 br	-6	-8		15
left1 bracket	-15	-23	24	-8
left1 break		13
left1 break.	20
left1 bring		9
left1 burn		-7		18
left1 buy	-16	9			5
left1 by	19
left1 c	9
left1 call	10
left1 can				6
left1 can't	5
left1 catch	-12	16
left1 caulk	9
left1 cause	6
left1 ceiling				13
left1 change	-8	8		6
left1 check	6
left1 chip				11
left1 choose	9
left1 clean	13
left1 clear	15
left1 clip	-26		8	7
left1 closet		-10	15
left1 come	-5		6
left1 count	-18	10	20	-25
left1 cover	14
left1 crack	-7
left1 cut out	18
left1 dead	15
left1 deep	7
left1 den	7
left1 dig	14
left1 dining room	9
left1 down				14
left1 drill	20			-5
left1 drip	22
left1 drive	-7	-9		22
left1 eat	-8			30
left1 em		16
left1 end	15
left1 enough	14
left1 entry	11
left1 exam	20
left1 except						15
left1 extra	30	-26
left1 feed	9
left1 fifth	23			-5
left1 figure		23	-14	-20
left1 fill	20
left1 find	5
left1 fine	14
left1 first		16		-11
left1 fit		-5		10
left1 floor			7
left1 flush	20
left1 foam	-6	-12		24
left1 forget	-6	14		-5
left1 frame		12
left1 from	10
left1 get	-5		10
left1 give	24
left1 glue	25
left1 good			9
left1 gotta	6
left1 grab	-6	8			10
left1 grind	-9			16
left1 half	-18		25	-9
left1 hall	10
left1 hall bath			14
left1 hallway	13
left1 hand		-4	12	-16
left1 haul	12
left1 he	10
left1 here	-27	-16	33	-16
left1 hi	9
left1 him	4	5		-12
left1 hit	23
left1 hold	17
left1 house	13
left1 how	11
left1 i	9
left1 i'm		10		-14
left1 i've		13	-4	-17
left1 if	13
left1 inside		6
left1 insulate	15
left1 into	31
left1 it	8
left1 job				10
left1 keep	19
left1 kill	4
left1 know	7
left1 land	17
left1 laundry	21
left1 lay	-11			25
left1 lift	8
left1 like	10
left1 little	5
left1 living room	23
left1 long	18
left1 look	6
left1 lose	26
left1 make	42
left1 man	8
left1 master	4
left1 master bath	8
left1 match	12
left1 maybe	-10		32
left1 me		19
left1 measure	10
left1 meet	8
left1 miss		11
left1 mix		-5	-5	17
left1 move	19
left1 mudroom	6
left1 n	14
left1 near	20
left1 need		20
left1 nick	9
left1 no	34	-19	-14
left1 nobody	9
left1 not	25
left1 notch	14
left1 off	15
left1 office	9
left1 oh	36			-6
left1 ok	29			-9
left1 old	25			-13
left1 on	4
left1 once	6
left1 one's	21
left1 ones	27	-12		-12
left1 only		-15	16
left1 or		6
left1 order		15			7
left1 out	7
left1 outta	31	-10
left1 over	27
left1 owe	-9	15
left1 pack				14
left1 paint	34
left1 pantry	22
left1 past	20
left1 patch	19
left1 pick	14
left1 place	-16	-6		20
left1 plane	7
left1 plug	21			-7
left1 plumb	17			-5
left1 plus	-23	25
left1 point	19
left1 pop	12
left1 porch	12
left1 pour	-18		-7	24
left1 prime		-14		12
left1 pull	5
left1 push	8
left1 put				5
left1 quick	21
left1 rate	10
left1 reach	13
left1 read	16
left1 replace	-12	6	-5	11
left1 require		7	-14	-14
left1 rest	-33	-26	38	-21
left1 return	-8	-19		-17		26
left1 right	-5	14
left1 ring	14
left1 rip	6
left1 roll	6
left1 round	6
left1 sand	-17		8			10
left1 say	7
left1 scrape	10
left1 scratch			13
left1 screw				11
left1 scribe	31
left1 seal	17
left1 see	8
left1 send	-13	12				12
left1 set				15
left1 she	11
left1 shed	-8			16
left1 shim	4
left1 shop	-13	-13	-16			22
left1 short	-21	24		-5
left1 shut	5
left1 sign	-10		20
left1 silicone		-24	14	-6
left1 since	15
left1 sister		-5
left1 sit		6
left1 snap	12
left1 snug	11
left1 so		12
left1 sort	17
left1 spend	-19	-15	-16	30
left1 split	10
left1 stack	-13	-9		21
left1 stairs	-4			13
left1 stand		11
left1 start	6
left1 stick	-9			14
left1 still			21	-7
left1 store	-6		-15	-20	16
left1 strip	23
left1 stuff	-14	15
left1 supply	22	-13		-10
left1 swap	-10			39
left1 t area.	10
left1 t finish.	-7			8
left1 t fixture.	16
left1 t surface.	12
left1 t tool.			7
left1 t work.			15
left1 take	-14					19
left1 tape	4
left1 test	5
left1 than	17
left1 that	-9		14
left1 that's	-12	7		12
left1 the		-4
left1 the wrong	10
left1 them					12
left1 then	17
left1 there's			24
left1 they're	28			-13
left1 thing		-10	18	-5
left1 third	12
left1 those		-9	8
left1 through				28
left1 throw	-36	29	-4	4
left1 tighten	20
left1 tile		15
left1 till	13
left1 to	7
left1 too		13
left1 touch	8
left1 trim	15
left1 truck			12	-5
left1 try		-13	15	-11
left1 turn	25
left1 under	26
left1 until	19
left1 us	-6	25
left1 use				27
left1 v buy.	-8	16			12
left1 v need.		20
left1 v return.	-16	-25				25
left1 v say.	5
left1 v see.	19
left1 v use.				27
left1 wall	20
left1 want		7
left1 wash	17
left1 we	15
left1 we're		10	-15	-12
left1 well		10
left1 wet	6
left1 what	17
left1 when	14
left1 where	15
left1 which	13
left1 white		12
left1 why	9
left1 will	5
left1 with				8
left1 without		7
left1 won't	7
left1 wrap	13
left1 you	19
left1 your	14
left1 •					13
left2 !	-20			16
left2 '	24
left2 (		-17	7
left2 )	18	-8		-7
left2 -	-11
left2 1	11
left2 :	-9	9
left2 ;			-17	6
left2 about	22			-8
left2 across	26
left2 adjust	20
left2 aff	9
left2 after			-6
left2 again	9		-11
left2 ain't	21
left2 air	31
left2 alright	26
left2 also		6		-5
left2 am	-7	-20	31	-27
left2 anchor		10		-17
left2 anybody		7
left2 anyway	11
left2 arm	28	-23		-5
left2 around	-25			30
left2 arrive		-17	14	-11
left2 ask	8
left2 away	21
left2 b	6
left2 backsplash	6
left2 bad	20	-15
left2 bag	-11	24		-11
left2 bar			6
left2 basement	26
left2 bath	31	-5
left2 bathroom	28	-6		-16
left2 bay	31
left2 bead		-6		5
left2 because	28
left2 bedroom 2	6
left2 bedrooms	-6	-12	-5	16
left2 behind	22
left2 below	15
left2 bend		13
left2 between	22
left2 big	8
left2 black	16	-21	6	-13
left2 block	-18			31
left2 blow	17			-6
left2 board	21			-7
left2 boards	13	-26		8
left2 bolt	-15	11		8
left2 book	18
left2 boss	22
left2 both	38			-21
left2 bottom	15
left2 box		7
left2 br	17
left2 bracket	16			-28
left2 break	16
left2 bring	-18	7
left2 bubble	13
left2 burn	-6			32
left2 buy		20
left2 buzz	-10	-5		17
left2 c	30
left2 call	9
left2 can	24
left2 can't	27
left2 cap				13
left2 catch	15
left2 caulk	9			-10
left2 cause	32
left2 center				7
left2 change	-13	-9		17
left2 chase				9
left2 check	14
left2 chip	10
left2 clamp	-7	19
left2 clean	33
left2 clear	5
left2 clip	-5	-10		23
left2 closet	18	-38
left2 coat	22
left2 cock	6
left2 code	26	-19
left2 cold	29			-7
left2 complete	-34	-12		37
left2 corner	-9		11
left2 could	8	13		-31
left2 cover	33
left2 crack	25
left2 day	11
left2 dead		-8		21
left2 deck	24			-4
left2 den	-13	-21	14	6
left2 didn't	-8	11
left2 dig	19
left2 ding	13
left2 dining room	35
left2 doesn't	23
left2 dog	14
left2 don't	43	-5
left2 down			8
left2 drain						8
left2 drill		-8		10
left2 drip	7
left2 drive	26
left2 drop	34
left2 dry	9
left2 drywall	-5	-13	-7	18
left2 each	31	-24
left2 eggshell	-18	17
left2 either	-8	14		-11
left2 electrician	15
left2 else	29	-10		-8
left2 em	9			-14
left2 empty		11	-7	-7
left2 enough		-14	15	-12
left2 entry	14	-9	12	-23
left2 epoxy	18			-5
left2 even		-14
left2 every				9
left2 except	-17	20
left2 extra	-8	-7	-17	-9		21
left2 feel	-14	11		6
left2 fence		-18		20
left2 figure	11
left2 fill	-5			28
left2 finally	24
left2 find	-10	-13	19	-5
left2 fine	12
left2 finish				11
left2 fireplace			17
left2 first	-32		6	13
left2 first coat			-5	14
left2 fit	-6			17
left2 fix		17		-5
left2 flashlight	21	-15	-7	-5
left2 flat	19	-27	7	-10
left2 floor	28
left2 flush	30	-15
left2 foam				23
left2 frame	17
left2 from	6
left2 front	-14	-7		24
left2 full	23
left2 gary	25
left2 give					14
left2 glue		-7		11
left2 go				6
left2 gonna		6		-11
left2 good	35
left2 gotta		11
left2 grab	6
left2 gray	-19	8		8
left2 grind	20
left2 grout	31	-21
left2 guy	25
left2 hair			17	-8
left2 half			13
left2 hall				14
left2 hand	-17		32	-45
left2 happen	21
left2 happy	19
left2 hard		-12		6
left2 he	14
left2 he'd	15	-5
left2 he'll		6
left2 head	-11	16
left2 hello	20
left2 her	32
left2 hey	26	-9		-8
left2 high	7
left2 him	6
left2 hole	21
left2 holes		-14	-13	23
left2 home	17
left2 homeowner	19
left2 hook	23
left2 hot	12
left2 house	32
left2 hum	14
left2 i'd	-9	26		-12
left2 i'll		6
left2 i'm		18
left2 i've	-8		35
left2 if	23	-8
left2 in	24
left2 inside	22	-11
left2 inspector	24
left2 install	18
left2 instead	14			-8
left2 it'll		11
left2 it's	26
left2 job		-8		8
left2 joint	-13			25
left2 keep	13
left2 kind	10
left2 kit				5
left2 kitchen	17
left2 knock	9
left2 know				8
left2 l		11		-5
left2 label	4
left2 ladder	23
left2 land			9	-9
left2 last	-25		-18	29
left2 latch	10
left2 lay	-10
left2 leak	13
left2 leave			7
left2 leg	14
left2 legs		-18		13
left2 let				10
left2 let go	19		-8
left2 lid				18
left2 lift	16
left2 like		-21		18
left2 line		-9		13
left2 list	-6	13
left2 living room		-19	-8	15
left2 lock			11	-16
left2 lol	21
left2 long		8
left2 look	28	-10
left2 loose	9
left2 lose	-7			17
left2 lot	14	-17				11
left2 low			12
left2 luis	17
left2 main	24
left2 make	-6	21
left2 match	-6	-13	18	-11
left2 maybe	-22	29	-10	-15
left2 me			20
left2 measure	19
left2 middle	18
left2 miss		24
left2 morning	11
left2 mortar	21	-5
left2 mount	31	-6		-12
left2 move	26			-13
left2 mrs	12
left2 mud	-5	13	-4
left2 must	22			-9
left2 my	26
left2 nail	-17		-7	23
left2 need		11
left2 never		-12	9
left2 new	10	-12
left2 next	8			-8
left2 night	25	-7		-7
left2 no	35
left2 nobody	6
left2 noise	25
left2 nos	31			-12
left2 not	6
left2 notch	9
left2 nothing	13
left2 now	9
left2 number				16
left2 oak			14
left2 off	24
left2 ok	8	-5
left2 okay				7
left2 old	4
left2 one's	15
left2 ones				9
left2 only		-23	5
left2 open	-4		14
left2 or	36
left2 order	-13	18
left2 other					16
left2 out	12
left2 outside	14
left2 over				-5
left2 owe	-18	23	-17	-21	15
left2 owner	25	-13
left2 pack	-16			22
left2 paint			13
left2 pantry			-6	15
left2 paper	26			-10
left2 pass	12
left2 peel	15
left2 phone	20			-6
left2 pick	-24	9		-11	33
left2 pin	11
left2 pipe	7
left2 plate	-27	22	-21	15
left2 please		24
left2 plenty	-8		10
left2 plug	10		-5
left2 plumb				10
left2 plumber				4
left2 powder room	-14					24
left2 pressure	5
left2 prime	-5			15
left2 pull				8
left2 pump	19
left2 punch	27	-9		-10
left2 punky	-8	16
left2 push	8
left2 put	-9			34
left2 quiet	-23	32		-12
left2 quit	12
left2 rack	7
left2 rain	19
left2 ready	18		-8	-21
left2 rebuild	-21	-13		30
left2 redo	-15		-10	20
left2 rehang	23			-8
left2 require	-29	33	6	-25
left2 reset				8
left2 rest	16
left2 return	-24	18	7	-5
left2 reveal	15
left2 right	15
left2 ring	-11			9
left2 rise	24
left2 rm	-7	-17		21
left2 rock	10
left2 rod		18	-18
left2 roll	29	-11		-19
left2 roof	32			-5
left2 room		-11	-7	14
left2 rot	6
left2 rotten				7
left2 round				15
left2 row	25		-9	-4
left2 rusted through	22
left2 salon			-11	7
left2 sand	17			-11
left2 save	19	-7
left2 say	-8	20
left2 seal				6
left2 second		8	-6
left2 second coat			13	-8
left2 second floor	-9			15
left2 see	-7			13
left2 send	-5	-13	4	-4		19
left2 set	42			-8
left2 she	4
left2 she's			6	-6
left2 sheath	12
left2 sheet	11
left2 shim	-16	-6	8	15
left2 shop	-9	-10		17
left2 short		7
left2 shot	-8	22		-5
left2 should	29
left2 show	19
left2 shut	6
left2 sign	18	-8
left2 silicone		-14			15
left2 size	21
left2 skim	15
left2 slab	8		9	-13
left2 slip	20		-24	-21
left2 smell	14
left2 smooth		-12			14
left2 snake	22
left2 snap	14
left2 snug	20			-13
left2 so		4
left2 soft	-20		12			15
left2 solid	16		5	-28
left2 somebody's	12
left2 sorry	13
left2 sound	32
left2 spare	-22	-9	16	14
left2 spins		-17	19	-19
left2 splice	25			-11
left2 split			7
left2 spot	6
left2 square	20			-9
left2 squeak	16
left2 stain	9
left2 stairs	8	-7
left2 stand	16
left2 start	21
left2 static	7
left2 stay	-14	-17	27	-10
left2 step	16
left2 stick	17
left2 stop	25
left2 straight	-15	23
left2 strap	33			-4
left2 street	25	-20
left2 strike	-7	15
left2 stuff	14			-11
left2 supply	-9			18
left2 swap				7
left2 sweet	22
left2 t	5
left2 t finish.	-5
left2 t role.	4
left2 t tool.	15
left2 tae	19
left2 take				-22		18
left2 tall		4
left2 tell	11
left2 template	20
left2 tenant	9	-18	-14	10
left2 test	28
left2 the lady	-8	15
left2 then		15
left2 there's			21	-13
left2 they're	18
left2 thick	12
left2 third	-10		15
left2 this		-8	-9	18
left2 though	18
left2 through			12
left2 throw	27			-18
left2 tight	32			-15
left2 tighten	18			-9
left2 till	27
left2 time	-13			13
left2 too high	-12	17
left2 top				10
left2 touch	10
left2 trim	7
left2 trip	25	-19
left2 truck	17			-10
left2 try	-5	15
left2 turn	21
left2 under	15
left2 underneath	11
left2 unit	-9	-11				23
left2 upstairs	-13		-4	27
left2 use	-11			31
left2 v buy.		16
left2 v need.		16
left2 v return.	-24	18	7	-5
left2 v see.	8
left2 v use.	-11			31
left2 van	-23		21	-19
left2 vent	7
left2 walk	8
left2 walls	24	-7	-19
left2 want	8
left2 water	19
left2 we'll	-32	32
left2 we're	-12	5
left2 weatherstrip	-8	18		-15
left2 well	6
left2 were	6
left2 wet	15
left2 what	25
left2 where	14
left2 which	18
left2 white	-21	16	11	-11
left2 whoever	23
left2 whole	6
left2 wide	33
left2 will	-5	23
left2 wire		16
left2 wobble	14
left2 won't		10
left2 work	29
left2 would	-11	14
left2 wrap			8
left2 wrong	32	-11
left2 x	16
left2 yet		13		-5
left2 you	35
left3 &		15		-6
left3 '	20			-15
left3 )	8
left3 *	30	-15	-9
left3 -	19
left3 /	30			-13
left3 3	4
left3 ?	-10			15
left3 @	35
left3 N	6
left3 above	23
left3 across	-11			17
left3 add	24			-9
left3 after	28
left3 again	23
left3 ain't	23			-6
left3 all				8
left3 already					8
left3 also	7			-5
left3 am	17
left3 an	16
left3 anchor			16	-15
left3 another	7		-8
left3 any	-12	18		-6
left3 anything			-22		8
left3 are				14
left3 around		5
left3 as	14
left3 attic	20
left3 b	-37		18	9
left3 back	-5
left3 backsplash	9
left3 bad	-6				18
left3 bag	7	10		-15
left3 bar	-13		21
left3 basement	4	-7
left3 be	5
left3 because	11			-10
left3 bed	-9	-15	-13	26
left3 bedroom				7
left3 before	31
left3 behind	5
left3 below	25			-17
left3 bench		-6	-7	13
left3 bend		22	-9	-19
left3 between	9
left3 big	6		-14
left3 birch		-5		7
left3 black		10
left3 block	-32			18	19
left3 blow	-8	16
left3 board		18		-17
left3 boards	-13	8
left3 bolt	7
left3 boss	8
left3 both	14			-26
left3 box	21
left3 br	22	-7		-14
left3 bracket	22
left3 brass		-19		15
left3 break			16	-16
left3 bring	4	5	-8	-14
left3 but		20
left3 button	13	-7
left3 buy	11
left3 c	21
left3 can't	-9	-5		19
left3 cap		-26	12	14
left3 caulk	-28	4	26	-13
left3 ceiling		8
left3 center	-6			18
left3 change		18	-24
left3 check	28
left3 chip	-8			17
left3 chirping	-5			12
left3 clamp	14
left3 clean				8
left3 clear	40			-21
left3 clip			-15	7
left3 close		7
left3 closet	26
left3 coat					7
left3 cold	32
left3 color	-4			5
left3 come	8
left3 corner	-4					19
left3 counter				9
left3 cover				10
left3 crown	-17	-23	-14	-17	13	19
left3 cut	-18		16
left3 day	36
left3 dead	42	-22
left3 dent	13
left3 dining room	12	-8	5	-14
left3 dog	11
left3 down	10	-5
left3 drags	18
left3 drain	4
left3 drip	-5
left3 drive	-9				19
left3 drywall		-4
left3 dump	13
left3 each	-6	-39	-25	42
left3 electrician	26	-13
left3 em			5	-24
left3 end			-6
left3 enough	15
left3 everywhere				-4
left3 except	27			-17
left3 falls	13
left3 feel	-4		14
left3 fill				7
left3 finally	23	-14		-13
left3 find	-4	17		-18
left3 finish	-25			32
left3 fire	13
left3 first				14
left3 fit				11
left3 fix	9	-16		4
left3 flat	17
left3 float	-11		-11	18
left3 floor	26	-19
left3 foam	-29			24
left3 foil		12
left3 for				-24
left3 forget	23
left3 frame		9
left3 fre	12
left3 from	20	-5
left3 front	-5	-18		22
left3 gap	9
left3 garage	10
left3 get	17
left3 give		-10	-14	13
left3 glue	-22			5
left3 gonna		9	-5	-5
left3 gotta	19
left3 grab		14
left3 grout	-17		11	13
left3 guest room	21	-6		-4
left3 guy	13
left3 hall	-16	26		-8
left3 hand	-21	8	-14	17
left3 has	6
left3 have	32
left3 he					13
left3 he's	-14		19			7
left3 her	15	-19	9	-14
left3 here	6
left3 hey	18
left3 him	28	-19
left3 hinge	10
left3 his	18
left3 hit				5
left3 hole	-33	7	16	7
left3 holes	14		4	-11
left3 hollow	-11	-6		18
left3 hook	-5	-6			11
left3 hot	20
left3 house	5	-8	-12	4
left3 how	-19	27
left3 hum	23			-5
left3 i'd	-18	12	12	-18
left3 i'll	21
left3 i'm			6
left3 i've	-8	-13	19
left3 if	25
left3 inch		10
left3 inside	-33	13	-4	20
left3 inspector	5
left3 into	-18	15
left3 isn't	9
left3 it's	22
left3 just	-5	-7	5	8
left3 keep	30			-16
left3 kitchen	19
left3 knock	9
left3 know	28
left3 lag	-18			21
left3 land	18		-9
left3 last	-16			12
left3 latch	18
left3 laundry				11
left3 leave		8
left3 let	23
left3 level	7		-16
left3 lid	40	-35		-14
left3 lift		-6		9
left3 linen closet	-12			12
left3 little	17
left3 living room	8
left3 lock	-5			11
left3 long	-12	12		-9
left3 longer	39	-30
left3 loose	5
left3 low	16
left3 lower	8
left3 m				7
left3 man	28	-16
left3 master	-21			25
left3 maybe	-10		17
left3 me	6
left3 middle				11
left3 miss	-11	18			8
left3 more		8
left3 move	18	-5
left3 mud	24	-13
left3 must		11		-5
left3 nail		-6		4
left3 never	-13	-7	-6	28
left3 new				6
left3 next	14			-5
left3 nobody	26
left3 number	35			-5
left3 nursery	-24	-16	-8	32
left3 oak	-39	-9	31
left3 off	5
left3 office	29	-25
left3 oh	18
left3 oil	-12	17
left3 ok			12
left3 okay	36
left3 one's	-17	20
left3 ones	26
left3 only	31
left3 open	-17	25
left3 order	12			-15
left3 outside		10
left3 owe		12
left3 own	10
left3 owner	5
left3 pack		10	-6	-15
left3 painter	10
left3 paper	5
left3 patch	-8	20
left3 phone	18
left3 pick		26
left3 piece		-21	19	-17
left3 pin	21
left3 place	30			-13
left3 plate	15	-10
left3 please	17	-9
left3 plug	-6
left3 plumb	7
left3 porch	16			-4
left3 powder		-15		18
left3 prime	19
left3 pull	15
left3 r	-16	19
left3 rain	-21	-13	15			19
left3 rate	9	-11	11	-23
left3 read	19
left3 red	12			-13
left3 redo	7	-20	6
left3 replace		-8		14
left3 reset	-4			10
left3 rest	14
left3 return	21
left3 right			9
left3 ring	-31	17		21
left3 rip	-13		18
left3 rm				13
left3 rocks	-19	24
left3 rod	29			-13
left3 roll	-23		16	12
left3 room	7
left3 rot				11
left3 run	19
left3 rust	11
left3 s	25	-10		-5
left3 sag	-5			11
left3 salon	27			-8
left3 same	26	-14		-5
left3 sand	6
left3 say		-5	21
left3 scrape	26			-8
left3 seal	-22			9	11
left3 seam	10
left3 second	-24	11			13
left3 second floor	11
left3 see	12
left3 send	-6	15
left3 set	7
left3 she	14
left3 she's	38			-12
left3 shim	26			-13
left3 shop	-5	27	-8	-18
left3 short	-11	6	10
left3 shot	-17	18
left3 should	5
left3 show	24
left3 shut	20
left3 side	-18	9	5
left3 silicone	10
left3 since	20			-6
left3 sister	-13	15
left3 sit		5
left3 slab	15
left3 slope	12
left3 slow	27			-22
left3 snug		-6		14
left3 soft	23			-15
left3 solid	-8	-13		26
left3 some		9		-16
left3 somebody	-15	24		-11
left3 somebody's	12
left3 something	9
left3 spare	13
left3 split	-32	28		10
left3 spray	-13			18
left3 square	-31		15	6
left3 stairs		-13		12
left3 staple		-7	8	-15
left3 start	8
left3 stay	16
left3 steps	13	-17	9	-21
left3 stick	14	-15				10
left3 still					6
left3 store		17	-4		-5
left3 strip			-6	5
left3 supposed		16
left3 swap	-20	-13	35
left3 sweep	25	-11
left3 swing		6		-5
left3 take	12
left3 talk	27		-23	-21
left3 tall	12
left3 tape	32			-26
left3 tear	8
left3 tell	-5		7	5
left3 temp	4			-5
left3 the lady	-11	-10	22
left3 their			17	-8
left3 them		-10	17
left3 there	10
left3 there's	19
left3 they		-22	8
left3 they're	22
left3 thick		-16		17
left3 think			-10
left3 third				-13	19
left3 this		-4				17
left3 though		17		-19
left3 throw	28	-5
left3 tie				7
left3 tight						14
left3 til	-15		22	-16
left3 tile	-6
left3 time	-27		23
left3 too		17		-12
left3 top	7
left3 touch	6
left3 trim		17		-13
left3 trip	-12	14	-7	9
left3 truck	11
left3 turn	12	-12	14	-22
left3 unit	29			-4
left3 unless	10
left3 until	23
left3 upstairs	20	-13
left3 us	-6	7
left3 use	17			-11
left3 vent				10
left3 wait	-15		26
left3 walk	-23				17
left3 walls	14
left3 water	26
left3 way					11
left3 we're			12
left3 weather	17	-9
left3 weep		6		-5
left3 weight	32	-8	-9	-5
left3 well	-11	11		8
left3 were		-5		10
left3 what			11
left3 what's		10
left3 when	5
left3 where	10
left3 which	10
left3 white	-14	30		-14
left3 whole	27
left3 will	-7	21
left3 wire	6	-26		6
left3 with				12
left3 within		-9		9
left3 without	-21	19			14
left3 won't					5
left3 work	10
left3 wrap	-11			8
left3 x	-13	5
left3 yeah	12
left3 yet		8
length after have far	-30	31
length after have here	32	-6	-16	-10
length after need far	-5	-27	11
length after need here	9
length after need sentence	-5	30	-24	-34
length after none far		7		-17
length after none sentence		9
length after used sentence	-25		14
length before it came	29
length before it have	-29		46	-45
length before it lacks	40	-14
length before it need		29
length before it used	-7			44
length behind it have	-21		7	6
length behind it need	-5	7
length behind it used		-15		11
length beside come	23
length beside figure	-13	21		-9
length beside get	-51	5	39	-20
length beside go		17	-10	-22
length beside like			9	-19
length beside measure p other	23
length beside move p other		18	-13	-24
length beside need		23
length beside need b nobody	-4	18
length beside need b other		16
length beside need b person		23
length beside other b other		22	-18	-34
length beside other b person	-40	23	13
length beside other i other	10			-16
length beside other p other	-16		14
length beside other p person	-29	-17	36	-13
length beside other pp other	22
length beside pull	-33	-17	-13	38
length beside put	-39	-25	12	34
length beside run		-21	-7	16
length beside snake	16
length beside undefined is other	10
length beside use	-35	-9	-5	44
length beside use pp other	-24	-4		27
length beside want	-13	28
length beside work b nobody	12			-12
length beside work b other	27			-22
length beside work bp other		-9		14
length beside work pp nobody	17	-9
length beside work pp other		-14		10
length beside work pp person	-20	-13		29
length beside work s other	-5			14
length cue ate	-9			12
length cue back	25			-17
length cue came	7			-4
length cue have	-26		60	-32
length cue lacks	21
length cue need		42
length cue used	-5			26
length have present behind		-23	27	-4
length kept	-22	4	24	-24
length left ,	-5		-16	19
length left .		-31	18
length left :	-27	11	-17	17
length left about	-8
length left and	-27	39
length left at	37	-10		-13
length left every	35	-15		-28
length left figure	-13	21		-9
length left for	26
length left get	-33	10	22	-10
length left in	5	-14
length left is	4	-13		9
length left it				10
length left it's	24
length left like			13	-10
length left need	-32	45
length left of	16	-23			10
length left over	29
length left run	-5	-15	-8	18
length left the	30	-20	-6
length left up	-18	11		15
length more	-10	19		-7
length name flawed	-14	15
length named before finish		-6	13
length named before surface		-6		14
length named here material	-43	53
length named here part	-16	29	-8
length named here surface	-22	5	8
length named here word	-12	9		10
length need modal behind	-19	32
length need owed behind		16
length not ahead	5	5	-5	-16
length null copula behind	10
length null none no	-6	6
length other copula behind	13	-4
length other imperative behind		22	-7
length other modal behind	-14	15
length other past behind	-15	-11	29
length pointing	-17	-13	30
length right #	-15	19
length right ,	19			-11
length right .	-4			12
length right Q	39	-24	-10	-19
length right across	15
length right and				10
length right down	22
length right from	28	-24	-10
length right i	42	-16	-6	-29
length right in	-8	-12		15
length right leave	-18	-6	32	-12
length right of	-26	-12	20	15
length right on	-5	10		-7
length right short		9
length right so				-10
length right the		6
length right to	-5		-4	9
length right up		-31	-9	17
length right with	15	-18
length says copula before	-24	16	4
length says copula behind	13
length says copula behind not	8	5		-12
length says imperative behind	8	5		-7
length says modal behind	-6	26
length says none no	-6	6
length says owed behind		19
length says past before	-30	-21		31
length says past behind		-17		12
length says present behind	-26	9
length sized	-76	26		39
length sold so true	-17	27
length then move pp	-11	-6	29
length then other b		12	-18	-13
length then other p				7
length then undefined is	-45	25		21
length then undefined will	-5			-26
length then use pp	-13			19
length then work pp				9
length then work s	6	-20	-9	5
length use past behind				17
length verb be behind	13	-4
length verb get behind	-40	18	25
length verb have behind		-23	27	-4
length verb need behind		19
length verb null behind	10
length verb null no	-6	6
length verb pull behind	-17			24
length verb put behind	-29		-5	29
length verb run behind		-20	-14	13
length verb use behind				17
length verb want behind	-17	31
length whole clause	-15	18	-13	14
length work imperative behind	39	-25
length work past behind		-23		20
list have	-22		49	-40
list need	-13	47	-27	-34		9
list used	-9	-29	-27	42
many	49	-7
marked	-14	41
meant back 1	-8
meant back 5	24	-32
meant back 6	20	-38	6
meant back 7	35	-13	-7	-10
meant back 8	28		-27	-20
meant before more	-7	6	8	-18
meant before new	-6
meant flawed false	29
meant flawed true		5
meant place -	12			-13
meant ran out	-10	47		-14
more		37
named before area	-6			22
named before finish	-27
named before surface	13
named here defect	27
named here role	24
named here surface	15
named here work	21
nameless	45
next copula other comma	28	-7		-15
next copula same comma	12
next copula same stop	13
next cue ate other		15
next cue bought other	-20	13		-6		17
next cue came other	10	-10
next imperative same stop	20
next modal same stop	12
next none other comma	-29	30	-6
next none same run-on	43
next none same stop	8
next none same word	6
next past same and				27
next past same stop	27
next present same stop	24
next use buy imperative same	-11	38
next use buy modal other	31	-7		-7
next use buy modal same	-23	17	11	-12
next use buy owed same	-37	30	20	-9
next use buy past other	43	-20
next use buy past same	6
next use buy present same				-17
next use have imperative same	36	-11	-10	-13
next use have owed same	-14			9
next use have past same	19
next use measure modal other			11
next use measure modal same		-15
next use measure owed other	-7	22		-16
next use measure past other		-16		11
next use measure past same	28
next use move imperative other			10
next use move imperative same	10
next use move owed same	-5					8
next use move past other	15
next use move past same				6
next use move present other		15		-6
next use need modal other	25
next use need past other	-6	-25	26
next use need past same			20
next use null imperative other	-6	6
next use null imperative same			17	-11
next use null modal other		4
next use null owed same	22
next use null present same		-24
next use other modal other					5
next use other owed other		17
next use return past other	18
next use return past same	-36	-8		-7		40
next use return present same	20
next use say imperative other	21
next use say modal other	-6		16
next use say modal same	4
next use say past other	-10			8
next use say past same	30
next use say present other	5	15	-18	-12
next use see modal other	7
next use see present other	10
next use see present same	10
next use use imperative same		-15		7
next use use modal same			14	-31
next use use past other	7
next use use present other	8
next use work modal other	8
next use work owed same	7
next use work past other	16
next use work present other	9
next verb add same	29			-5
next verb adjust same	13
next verb anchor same		10
next verb arrive other	12	-14			9
next verb ask other	11
next verb auger same	22			-10
next verb back same	21
next verb bed same	-14			19
next verb believe same	-16		21
next verb bend other	13
next verb bet same	5
next verb bin same	24	-11	-7	-10
next verb blow same	33		-16
next verb bolt same	-35	-16		45
next verb book same	11
next verb borrow same	-8	9	7	-13
next verb box same	19			-5
next verb break same	4
next verb bring other	21	-22
next verb buy other	22	-22
next verb buy same	15	-10
next verb buzz same	31			-8
next verb call other	7			-15
next verb can same	-16		16
next verb cap same	28
next verb catch same	16
next verb caulk same	15
next verb change other	32		-8
next verb change same	-14			6	11
next verb choose same		10	-8
next verb chuck same	26	-16
next verb clamp same	29			-8
next verb clean other	25
next verb clean same	18
next verb clip other	19
next verb close same	-5	7
next verb coat same				9
next verb come other		19		-15
next verb complete other		13	-19	-8
next verb consum other		-4	17	-20
next verb correct other	16
next verb count same		-16	16	-22
next verb cover same		7
next verb crack other				-10
next verb crack same	24
next verb crosse other	13
next verb cut other	16
next verb cut out same	23			-7
next verb cut same	8
next verb dig same	16
next verb do other	-12		-21	22	12
next verb don't same				-10
next verb drain same			-5	16
next verb draw same	28
next verb drill other	8
next verb drill same	21
next verb drip other	-10	-8		29
next verb drip same	-17	28
next verb drive same				14
next verb drop other	24			-5
next verb drop same	23
next verb dry other			-24	15
next verb eat same	12
next verb either same	20			-15
next verb empty same	-27	-22	-23	-14	35
next verb exchange same	17
next verb feather same	26		-5
next verb feel same	16
next verb figure same	10
next verb file same	22
next verb find other	10
next verb find same	25			-6
next verb finish other			5
next verb finish same	8
next verb fish same	11
next verb fit other	18		-4
next verb fit same	-14			11	5
next verb flip same	25
next verb float same	18
next verb forget same	-14				16
next verb frame same	9
next verb fre same	13
next verb get other	20			-15
next verb give same		-14		-27		37
next verb glue other	28			-19
next verb glue same	8
next verb go other	-6	39
next verb gotta same	18
next verb grab other	24
next verb grab same	-26	33
next verb grease same	22
next verb grind same	12
next verb guess same	25	-13
next verb hang other		6
next verb has same	5
next verb head same	14	-27		6
next verb hit other	13			-10
next verb hit same	8
next verb hold other	13	-21		10
next verb hold same	22
next verb hum other	36	-25		-7
next verb hum same		7		-9
next verb i'd same	14
next verb jack same	7
next verb jam same	17
next verb keep other	20
next verb keep same		8
next verb kick same	18
next verb know same	19
next verb land other	14
next verb land same	6
next verb lay other	-17	-22	-9	28
next verb leak other	11
next verb lean same	-5	9	-13
next verb leave other	20	-6
next verb lift other		-15		10
next verb like other	-11	17		-11
next verb lit same				10
next verb lock other			8
next verb look other	19
next verb love same	20
next verb make other	24
next verb make same	27
next verb mark same	27			-17
next verb mention same	15			-5
next verb meter same	8
next verb miss other				6
next verb miss same	21
next verb mount same	-33	21		18
next verb mud same	34			-22
next verb must same	31
next verb nail same				13
next verb need other		-5
next verb notch same	13
next verb notice same	8
next verb open other	10
next verb order other	-4	-20	11	8
next verb order same		20		-20
next verb owe other		15
next verb own same	14
next verb pack same	11
next verb paint same			18	-21
next verb pass other	29
next verb pass same				13
next verb patch other				11
next verb patch same	30
next verb pick other	19
next verb pin same	26		-25
next verb pitch same		-15		5
next verb plane same	26
next verb plug other	14
next verb plumb same	-6			13
next verb point same	18		-15
next verb pop same		15
next verb pour same			8
next verb prime other	-22	-8		26
next verb promise same	18
next verb pull same	18
next verb pump same	22			-12
next verb purge other	18
next verb push same	15
next verb put other	29
next verb rake same	-14	-20	31	-13
next verb rate same	19
next verb reach same	19
next verb read same	28			-7
next verb receive other		13
next verb recheck other		-12		14
next verb recut same	14
next verb refasten same	10
next verb refix same	24			-12
next verb refuse same	-23	-11		-7		32
next verb reglue other	19
next verb reglue same		6
next verb rehang same	13	-12
next verb reorder same	-32	37
next verb replace other	19
next verb replace same	-7			20
next verb require other	-37	-16	28	15	-24
next verb require same	-17		22	-11
next verb reroute same	32			-6
next verb reseat same	13
next verb reset same	7
next verb return other			12	-20
next verb return same	-30					38
next verb ring same	10
next verb rip same				6
next verb run other				7
next verb run same	18
next verb rust same	-5	-25	5	9
next verb sand same	15
next verb save same	21	-7
next verb say other		26		-10
next verb say same	18
next verb screw same				20
next verb scribe other	17
next verb scribe same	14
next verb see other	30
next verb seize other	19
next verb send other				15
next verb send same				-8		16
next verb set other			11
next verb shave same	15
next verb shim same	19
next verb short same	-19		-19		21
next verb should same	-8	23		-17
next verb shut same	9
next verb sign same	26
next verb silicone same	-8			15
next verb sister same	41
next verb sit other				18
next verb size same	-12	7		9
next verb skim same	24
next verb slap same	-12	9
next verb slip same	9
next verb snake same	19	-10
next verb snap same				15
next verb snug same	21
next verb solder same	7
next verb sort same	26	-5	-4	-16
next verb sound same	25	-7		-6
next verb spin same	13
next verb split same	26	-13
next verb spray same	-16	-7	23	-15
next verb stack same	16
next verb stain same	14
next verb staple same	18			-6
next verb stay same	12		21	-28
next verb step same	16
next verb straighten other	20	-7
next verb straighten same	9
next verb strap same	-10			15
next verb stretch same	15
next verb strip other	-4	-23		20
next verb strip same	-14		7	11
next verb stuff other	12
next verb supposed same	11
next verb swap other			16
next verb swear same		-9		5
next verb swing same	-20			18
next verb tag same	5
next verb take other	-13		7	-27	6
next verb talk same	6
next verb tap same	25		-9	-4
next verb text same	-5	11
next verb that'll same		-11			7
next verb thin same		9
next verb think other	9
next verb tie same	9
next verb tighten same				5
next verb top same		-5	9
next verb touch other	-10	16
next verb touch same	29	-12
next verb trim same	7
next verb trip same	41			-17
next verb try same	36
next verb tuck same	9
next verb turn other	13
next verb turn same	32
next verb use other	8
next verb wait other		7		-7
next verb wait same		10
next verb walk same	-21					13
next verb want other			10
next verb weep other				9
next verb weep same	17
next verb will same		19
next verb wipe same				5
next verb wire other		5		-6
next verb wire same				16
next verb won't same	20			-5
next verb would same	11
next verb wouldn't same	26			-6
next verb wrap same	21			-4
next verb wrote same	-18	23
next verb yank same				8
one after bought sentence	-28	16	-11	-14	13
one after have far		8		-4
one after have here	33	-11
one after have sentence		17
one after need far						6
one after need here		32
one after none far	-15
one after none here	37
one after none sentence		9
one after returned sentence		8
one after used far		5		-6	6
one after used here		-10		21
one before it ate	8	-7		5
one before it back	-11	19
one before it bought	-29			-5		13
one before it came		-28			11
one before it lacks		17		-18
one before it need		18
one behind it ate	-10			7	-14	19
one behind it back						12
one behind it came	-13	32		-37	8
one behind it have	-17		18
one behind it need				-7
one beside are	-5	15		-5
one beside ask		4
one beside be			5
one beside box	11			-5
one beside bring		7
one beside buy	-7	-10		-12		17
one beside buy b nobody	-28	32
one beside buy b other	-10	24
one beside clean	8	-6
one beside clear	25	-9
one beside come	12
one beside cut	10	-28		5
one beside do	-18	8	-4	13
one beside drip				13
one beside eat		-6		10
one beside find	9			-7
one beside get		10
one beside glue	-7			15
one beside go	7	-7		5
one beside grab	-18	27
one beside has						8
one beside have b person	-17	17		-11
one beside have pp other	24
one beside have pp person	-6	-6		14
one beside hold	24
one beside is				-8
one beside leave		8
one beside like	11
one beside lose	14
one beside measure bp other	-8	18		-10
one beside measure bpp other	14
one beside measure p other	49	-12
one beside measure pp person	-7	17
one beside measure s other	11	-12
one beside miss		12		-6
one beside move b other	5
one beside move b person	11
one beside move p other	-20	-13		29
one beside move pp other		10		-7
one beside move pp person				9
one beside need b nobody	-30	41
one beside need b other	21	-6
one beside need b person		18
one beside need s nobody		9
one beside need s person	9
one beside nothing	-6			6
one beside open	16	-8
one beside order	-12	11			17
one beside other b nobody	-12	7	11	-10
one beside other b other		30
one beside other b person		14
one beside other i other		20
one beside other i person	16
one beside other p other	7	-30		4
one beside other p person	-13		31
one beside other pp nobody	14	-28	-8	-14	16
one beside other pp other	-5	10
one beside other pp person		5		-6
one beside other s other	13
one beside owe	-27	25		-11	16
one beside pick				-10	7
one beside pull	20
one beside push	6
one beside put	-17			38
one beside rip	4
one beside say	41	-24
one beside say b other		11
one beside scrape	9
one beside see	25	-7
one beside see b other	22	-6
one beside send		15		-9
one beside set		-6		10
one beside sister	-15			23
one beside spray	5
one beside stick	-4			8
one beside stop	33	-22		-11
one beside swap	-40		8	26
one beside take		10		-12
one beside throw	-14	23
one beside top	-13	24		-20
one beside touch	16
one beside try	-6	-12	18	-9
one beside undefined has other				-10		8
one beside undefined is other				-8
one beside undefined will other	21	-4
one beside use pp other	-25			34
one beside use pp person	6		13	-13
one beside want		8
one beside work b nobody		21		-32
one beside work b person	12
one beside work bp other	-15	16
one beside work bpp nobody		-30	-4	19
one beside work bpp other				16
one beside work bpp person	-9			32
one beside work i other	41	-17
one beside work i person		25		-27
one beside work pp nobody	-31	-10		48
one beside work pp other				6
one beside work pp person				8
one beside work s other		4
one buy imperative behind		15
one buy past behind	-42	-29		-19	27	16
one cue ate	6
one cue bought	-36				19	12
one cue came	-22		5		16
one cue need		39
one cue used				9
one false	-7
one have imperative behind		-8	9
one have present before	25
one kept	-37		28
one left #	7	-10
one left +	-14	6		14
one left ,	-4			23
one left .	-70	-5	9	50	17
one left G	17
one left Q	34	-19		-19
one left about	33
one left and	-27	24		17
one left as	35
one left at				9
one left be			6	-18
one left bring		16
one left buy	-11	-9		-14		17
one left by	24	-11
one left cut		-13		18
one left down	4	-15		5
one left find	21			-10
one left for		15
one left from				9
one left get	-5	13
one left glue		-6		5
one left grab		6
one left has	-6					11
one left hit	22
one left hold	13
one left is	5	-19
one left it's	-5	28
one left just	-11	19		-10
one left leave	11
one left like	38
one left make	19
one left maybe	34	-12	-17
one left me		19
one left miss		5
one left need		21
one left not	29
one left of	16	-11
one left off	35	-7
one left or	31	-22		-6
one left order					18
one left over	20
one left push	6
one left put	-4			16
one left rip	4
one left run		6
one left send		21
one left set	-8	-9		18
one left sister	-12			19
one left so	-50	66	-4	-38
one left stick	-10			11
one left take		17		-5
one left that's	10			-26
one left the	12	8		-30
one left them		-41	-7	-13	22
one left there's	27
one left to	33			-12
one left try	-9	-12	20	-8
one left use	-21	-12		41
one left want		12
one left with				8
one measure imperative behind	6
one measure modal behind	-32	35		-13
one measure present behind	17
one more	6
one move owed behind	-13	-7	-17	-17	24
one move past before	17	-15	-16
one move past behind	20
one move present behind	24
one named before area	8			-6
one named before part	-17	5
one named before surface	36
one named before tool		5
one named before word	8
one named here defect	36
one named here finish	-25	24	12	-25
one named here material	-23			8
one named here part	-67	28		31
one named here surface	21
one named here tool		14		-10
one named here word	42
one need modal behind	-6	10
one need owed behind		15
one not ahead	23
one null copula before		12	-5	-13
one null modal behind	-8	21		-12
one null none no	-8			4
one null owed behind	-7	-23	20
one other copula before	-17	19
one other imperative behind	-12	26
one other modal before	24	-6
one other modal behind		27
one other owed behind	-13	24		-8
one other past before		16		-27
one other past behind		-6	18
one right 
	-5	20	-11	-26
one right #	-9	12
one right +	-26	-29	-12	35
one right ,					14
one right Q		-12		18
one right T	-4			-15
one right a	-32	40
one right about	25
one right all				8
one right and	-18	39
one right are	-35	24	-11	14
one right at			6
one right be	37			-12
one right before	10			-21
one right behind	-6	-25	14
one right but	19
one right can	25
one right do	-17	6		12
one right for	10
one right from	-17	22
one right get		15	-16	-29
one right go		12	-5
one right has	20
one right in	-18			22
one right is		12
one right it'll	-6	15
one right it's		5
one right leave	12
one right like	4
one right no	50	-37		-26
one right now	22	-14
one right of				14
one right out				9
one right over		-25		20
one right right	20
one right she	-5	-24		19
one right somebody	24	-7
one right that				-9	-16	20
one right that's		-11
one right the	-16	34
one right then	6	-6
one right there	9			-17
one right through	29
one right to	21
one right too	-23	30		-14
one right under				18
one right up	28	-29
one right when	-5	17
one right where	23
one right with	28			-6
one right you	13
one say imperative behind	16
one say past behind	17
one say present behind		11
one says copula before	-21	26
one says imperative behind		8
one says imperative behind not	-17			12
one says modal before	-5	12
one says modal behind		32
one says modal behind not		10
one says none no	-11			10
one says none no not				-8
one says owed before	25	-6
one says owed behind		21
one says owed behind not		-9			18
one says past before	-17	4		14
one says past behind				15
one says past behind not		-9		10
one says present behind not	36	-20		-21
one sized	-36	27		10
one then buy b	6		-12	-10
one then have pp	-5			26
one then measure bp		8
one then measure i	5	-5		-13	14
one then measure s	4	-12
one then move b	18			-23
one then move p	24
one then move pp	10
one then move s	-13	16		-9
one then need b	20	-21
one then need s	27	-7		-17
one then other b		14
one then other i	-7			12
one then other p	6	-8
one then other pp	13	6		-27
one then other s	-9				13
one then say pp				-5
one then say s	10
one then see s	9			-16
one then undefined has			5
one then work bpp				18
one then work i	-16			27
one then work p	11
one then work pp				21
one then work s	-5			7
one true		39
one use past behind	13
one verb add behind	-13	12
one verb ask behind	13
one verb be before	-17	19
one verb bring behind		20
one verb buy behind	-11	-9		-12	4	16
one verb come behind	-12	25		-6
one verb cut behind		-21		10
one verb do behind	-7		17	-12
one verb find behind	21			-7
one verb get before	-5	24	-9	-28
one verb get behind	-16	7	9
one verb give behind		5
one verb glue behind	-4			6
one verb go before	-5	4
one verb go behind		-14		-12	18
one verb grab behind	-12	23
one verb hang behind				12
one verb have before	25
one verb hit behind				8
one verb leave behind	5
one verb like behind	-9	19
one verb lose behind	14
one verb make behind	25
one verb need behind		9
one verb null before		12	-5	-13
one verb null no	-8			4
one verb order behind	5	-11		-5	22
one verb owe behind	-20	8		-7	19
one verb pick behind		7
one verb pour behind	24
one verb push behind	6
one verb put behind	-7			26
one verb rip behind	4
one verb run behind	12			-7
one verb scrape behind	9
one verb see behind	23	-6
one verb send behind	-6	10
one verb set behind		-11
one verb sister behind	-15			23
one verb sit behind	14
one verb stick behind	-8			10
one verb swap behind	-39	19		29
one verb take behind	13
one verb throw behind	-5	12
one verb try behind	-6	-12	18	-9
one verb use behind	16
one verb want behind	-7	15
one whole clause		5
one work imperative behind	-5			14
one work modal behind		13		-18
one work owed behind	31
one work past before	-33			33
one work past behind				39
one work present behind	11
opens &	16
opens +	7	-8
opens alright	8
opens anyways	7
opens because	16
opens boss	17
opens cause	16
opens clause area	-15	-6	-4	37
opens clause count	-36			16
opens clause length	-27	12		24
opens clause one	-18	13		7
opens clause pack	-32
opens clause volume	-32	18	6
opens clause weight	-37	15		25
opens hi	14
opens jefe	5
opens man	6
opens now	19
opens oh	4
opens ok	29
opens please		30
opens plus		17	-13
opens right	11
opens then	12
pack after bought here		-34	-27	-30	39
pack after bought sentence	-27	-29	-22	-34	46
pack after have far	-19		22	-8
pack after have here	40		-12	-45
pack after have sentence	-8	14	10	-12
pack after need far		8		-19
pack after need here		44
pack after need sentence		25		-41
pack after none far	-35		8
pack after none here	-24	36
pack after used here	-7	-12		27
pack after used sentence	-41		7	8
pack bag	15	5	-12	-29
pack before it ate	-27			35
pack before it back		-12		-7		16
pack before it bought	-28	-8	-23	-31	40
pack before it came	-7	-19	38
pack before it have	-10		62	-21
pack before it lacks		38	-24	-35
pack before it need		40
pack before it used				24
pack behind it ate	-8	-16	-28	11		21
pack behind it back	-25			-32		31
pack behind it bought	-20	-18	-8	31
pack behind it came	-31	-11	32	-9
pack behind it have			6
pack behind it lacks	-13	21
pack behind it need	-50	31	7
pack behind it used		-9	12
pack beside are	28		-7	-22
pack beside be			-9	12
pack beside bring	-14	23
pack beside burn				22
pack beside buy	-37		-20	-14	31
pack beside buy b nobody	11
pack beside buy b other		23
pack beside buy b person	-41		-13	-13	30
pack beside call		4	-24	5
pack beside come	-15			-8	19
pack beside consum	-22	-21	-21	37
pack beside do	-40	-8	-29	18		19
pack beside eat	-6			22
pack beside figure	4		-10	-12
pack beside fill		-7		13
pack beside finish	-4		-20	20
pack beside get				-5
pack beside go	-6			10
pack beside grab	-24	38
pack beside hang	-35	-33	-5	48
pack beside have	-13		37
pack beside have b nobody	-9		20
pack beside have b person	-17		39
pack beside have pp person	36	-15	-27	-23
pack beside is	-6		19
pack beside leave			13
pack beside like	-13		-24	23
pack beside measure p other		-36	13
pack beside measure s other	-18		-32	-33	28
pack beside miss	-17	6	-15		18
pack beside move b other	14			-25
pack beside move p nobody	-11			30
pack beside move p other		-33		10		14
pack beside move p person	-17			21
pack beside move pp person	-16		27	-10
pack beside move s other	-20	16	5	-25
pack beside need		25
pack beside need b nobody		40
pack beside need b other		29
pack beside nothing	-35	6
pack beside open	-16	-20	14	6
pack beside order	16
pack beside other b nobody	-22	26		-5
pack beside other b other	-6	37
pack beside other b person	14	-5	-24	7
pack beside other i other	-27	24	-27	-21	13
pack beside other p nobody	-14	-18		-9	22
pack beside other p other		-38	-6	45
pack beside other p person		-6	42	-18
pack beside other pp nobody	-24	-26	13	-23	25
pack beside other pp person	25	-11	-11	-15
pack beside pick	-13	18	-6	-12
pack beside pull	31	-18		-24
pack beside put	-28
pack beside run	-10	18	-17	6
pack beside say b other	-40	48	-22	-29
pack beside set		-4	-24	20
pack beside take	-32			22
pack beside undefined is other			11
pack beside use				17
pack beside use b person	-12	-5	8	6
pack beside use pp nobody				30
pack beside use pp person				22
pack beside want		31		-13
pack beside work b other	-32	5
pack beside work b person		-38	14	4
pack beside work bpp other	-32	17	-35	18
pack beside work bpp person		-46	11
pack beside work i other	9	-23	-19	5
pack beside work p other	-19	11	-18	17
pack beside work p person	-11	12	-15	8
pack beside work pp nobody		-7	-28	25
pack beside work pp other	-8		-7	31
pack beside work pp person	-10	-15		53
pack beside work s other	-19	-13	31	-24
pack box	16	12	-10	-14
pack bucket	-5		17	-37
pack buy modal behind	-26	36
pack can			9	-19
pack carton	-8		14	-18
pack cartridge		-6		6
pack coil	12	-10
pack cue ate	-18			52
pack cue back	-14				10
pack cue bought	-37	-23	-31		45
pack cue came	-11	-24	37	-4
pack cue have			52
pack cue lacks		31	-11
pack cue need		54
pack cue used				22
pack drum	21	-11	-14
pack flat	56	-28	-23	-27
pack have present before			-24	-15	19
pack have present behind	-26		38
pack kept	-8	-16	29
pack left ,	-31			14
pack left .		-8	19			5
pack left :	-53		29	-19
pack left G	-32	-27	-16	45	16
pack left Q	-35	49		-43
pack left T	-36	-35		6	26
pack left a	-10		-19	-16	23
pack left about	-4			15
pack left also	-28	27		-32	-8
pack left and	-23	58
pack left be	-10	8	-21	10
pack left bring	-10	10
pack left buy	-22	20
pack left from	13	11	-20	-24
pack left get	-50		39	-23
pack left go	-15	-17	-21	35
pack left grab	-18	23			5
pack left have			14
pack left in	20			-15
pack left is		29		-17
pack left it	-33	41	-20	-26
pack left last		-12	23	-16
pack left leave		-23	34	-22
pack left me		8
pack left of	6	-41	9
pack left on	7	-23	-25	10
pack left order	11	-5
pack left over	21	-20	-5	5
pack left plus	-20	-5	5	12
pack left put	-6	7	-20
pack left short	-15	33	-20
pack left so	-20	56	-16	-24
pack left take	-38			28
pack left that's	-17	-18	-44	43
pack left the		-45	10
pack left there's		-32	41	-28
pack left through				36
pack left to	-12	-23		16
pack left up		12	-8
pack left use				4
pack left want	-21	39
pack left with	-14		-36	35
pack length	14		-10	-8
pack list have	-11	-27	36	-27
pack list need	-16	49	-28	-19
pack list used	-25	-27	-28	39
pack more		38	-13	-23
pack move past before	-20		39
pack move past behind				14
pack move present behind			18	-22
pack named before area	-20	-24	-25	40
pack named before finish	-27			10		10
pack named before fixture	-15		6	9
pack named before part	30			-12
pack named before surface	-6		19	-9
pack named before word	-4	12
pack named here defect	-12	22	-16	-6
pack named here finish	-38				15
pack named here fixture	-20		7
pack named here material	-37
pack named here part		-4		-36	9	11
pack named here surface				-22
pack named here word	-38			6
pack need modal behind	8	-19	16
pack need owed behind		25
pack need past before	-31	38	-21	-18
pack need present behind	-20	35		-12
pack not ahead	-38	44		-7
pack null copula before		22	-36
pack null copula behind	-27	8	14
pack null imperative behind	-13	25
pack null none no	-36
pack other copula before		-15	7
pack other copula behind	-22			21
pack other imperative behind		24
pack other modal behind	-9	41	-13	-22
pack other past behind		-16	12
pack other present behind	6	-6		6
pack pair	23		-13	-16
pack pointing	-11	5	-5			5
pack right 
	-15	31	-25
pack right #		37	-6
pack right (	-27	10	13	-16
pack right +				11
pack right ,	-20	-6			15
pack right .				6
pack right ;	-40		37
pack right Q	-20	5		14
pack right T	-46	33	8
pack right and	-43	12		8
pack right are	-7	-25	24	-22
pack right be			-17	10
pack right but		-30	5		5
pack right by	6		-15	-13	12
pack right for	-10	11	5
pack right from		5	-5	-42	19
pack right get	-13			12
pack right go	-28	-30	-39	52
pack right have	28	-6	-26	-22
pack right in			32
pack right is			10
pack right it	5	-26		16
pack right it's	43	-24	-22	-16
pack right leave			61
pack right more		9	-15
pack right need	-8	7	4	-7
pack right no	33	-29	9	-22
pack right of	-20	19		14
pack right on			30	-40
pack right out	26	-19		-16
pack right over	-22	-33	16	-40		22
pack right plus	-31	13	10
pack right short	-19	32	-6
pack right sit	4	7	-4	-11
pack right so	6
pack right the	-45	23		12
pack right then	-34	11	-27	23
pack right there's	-34		-11	38
pack right they	-17	13	10	-6
pack right to	-34	21		-22		8
pack right under	12	-22
pack right up	11	-35	-23	18
pack right use	-16			24
pack right where	-5	-16	-15	19
pack roll		31	-15	-12
pack say imperative behind	-10	15	-29
pack say present behind	4		-6	-13
pack says copula behind	-30		11
pack says copula behind not	-18	30	-24	-27
pack says imperative behind	-9	41
pack says imperative behind not	6	-4
pack says modal before		11	6	-19
pack says modal behind		21	-7
pack says modal behind not	-6	-27	31
pack says none no	-30
pack says none no not	-29	38	-22	-23
pack says owed behind		41
pack says owed behind not				-9
pack says past before	-17
pack says past behind				23
pack says past behind not	-12			13
pack says present before			-22	-17	12
pack says present behind	-22			13
pack says present behind not	32	-12		-6
pack set	28		-21	-30
pack sheet	24		-11	-26
pack sized	-17
pack sold so false	-24		5
pack sold so true	-41
pack stick	18	-19		-15		14
pack strip				8
pack then buy b				7
pack then have b		-5
pack then measure i	9	-16
pack then measure s	18	-7
pack then move b	-16	-18	19	7
pack then move p	-41		-42	49
pack then move pp		-5
pack then need b	-21		6
pack then need pp	-33	40	-19	-15
pack then need s	-21		27
pack then other b			11	-16
pack then other bpp	-13		-22	16
pack then other i			10	-6
pack then other p	-13	-28		8		27
pack then other pp			7	-14
pack then other s	8	6	-8	-14
pack then say b		9		-18
pack then say pp	-8			11
pack then undefined has	-41				20
pack then undefined is	-21		6	5
pack then undefined will	-17	44		-26
pack then use b		-15	-10	8
pack then use pp			-13	14
pack then work b					12
pack then work bpp	-11	9	-17	8
pack then work i	-44		31	-10
pack then work pp		-7	4
pack then work s	-28	24	8	-18
pack tin	6			-20
pack tub	61		-10	-27
pack tube		15		-16
pack use past before	-16			24
pack use past behind				26
pack use present behind	-25	-4		19
pack verb be before		-15	7
pack verb be behind	-22			20
pack verb blow behind	-6			5
pack verb bring behind		14
pack verb burn behind				9
pack verb buy behind	-22			-5	22
pack verb do behind	-25	14	-7	10
pack verb fill behind				11
pack verb finish behind	-21	-26	-29	36
pack verb go behind				19
pack verb grab behind	-23	44
pack verb hang behind	-12		9	6
pack verb have before			-24	-15	19
pack verb have behind	-17		34
pack verb leave before			43
pack verb leave behind		-22	29	-19
pack verb make behind		-16	-8	16
pack verb need behind		5
pack verb null before		22	-36
pack verb null behind	-25	6	17
pack verb null no	-36
pack verb order behind	22	-16
pack verb pick behind	-7			-6	20
pack verb pull behind	11	-16
pack verb put behind	-9	19		-5
pack verb run behind	-7	-19		30
pack verb set behind	-9	-22	-4	21
pack verb take behind	-54		15	8
pack verb throw behind	-24	5	-7	-9	15
pack verb use before	10		-8
pack verb use behind				30
pack verb want behind	-18	27
pack whole clause	-55
pack work imperative behind	-22
pack work modal behind				-14
pack work owed behind	-24	23	-8	-21	14
pack work past before		-30		19
pack work past behind	-9			55
pack work present before	-20	21
pack work present behind	-32		-8	43
plural area	-6	-20	-13	24
plural count	-27			10
plural length	11
plural one		6
plural pack	-10
plural volume	-26	9	12
plural weight	-22	25
pointer after need here	21	-7
pointer after none sentence			11
pointer before it need	-7	-8	17
pointer before it used	-17			21
pointer behind it have	22
pointer behind it used	22			-7
pointer beside put	-7			14
pointer beside work bpp person	-7			14
pointer cue need		-10	10
pointer cue used				8
pointer flawed			-7	-7		17
pointer left Q		-8		16
pointer left the	21
pointer name flawed	-11		8			14
pointer named before material	5	-7		8
pointer named before part		-6	11
pointer null none no	23	-5
pointer says none no	23	-5
pointer says past behind	-23			13		9
pointer verb null no	23	-5
pointer work past behind	-6			12
pointing	-23			16
right 
		18
right 
 *	12	-29	-13	14
right 
 G	-21	12	-6	8
right !	13
right # #		5
right # N	25
right &	-16	13		5
right '	12
right (	-12		5	-27	5	7
right ( Q	9	-29	22	-12
right )	-5
right ) ,		-16			17
right +	-9	4		9
right + G	32			-16
right + Q	-27	22		14
right + a	-25	22
right , N	-8	8	-5	-23	17
right , a	-13	21
right , about				7
right , all	-9	-35	-26	36
right , bring	25	-7		-20
right , but	-15	-27	39	-33
right , cut	7	-14
right , drain	-18			26
right , dry	-14	-8		30
right , fine	14	-16	-6
right , get	-25	8	8	-9	9
right , glue	6
right , go	-15	14
right , good	-15			23
right , have	31	-4		-14
right , hit				7
right , hold	-11			17
right , i'll	9
right , in					12
right , is	21			-7
right , it		-10	-13	15
right , kitchen	34	-4		-24
right , move	12
right , need			17
right , new	29			-11
right , no	7
right , not	4	-8		-9	16
right , now	13
right , ok	-11			21
right , open		-16	20	-15
right , order	-13				10
right , owner		10		-14
right , pull	7
right , put	8
right , replace	-17			23
right , send	32		-5
right , size	-22	17		12
right , so	29
right , still	23			-9
right , swap		-6		10
right , that's	25
right , the		9
right , they		-19	-16	-17		20
right , tighten	10
right , trim	11	-9	-15	6
right , unit	15
right , use				8
right , want	9
right , we				11
right , which	16
right , white	-23	25
right , will		11
right , you		7
right -	10
right . 
	-10	-44	30	4
right . #		13
right . N			-18	22
right . Q		-26
right . T		6
right . also		18
right . and	-6	30	-14	-32
right . back		8
right . bring	27	-22
right . cut	10	-9
right . for		-11
right . get		-18	12
right . good	-12			17
right . have			-22	11
right . he	21
right . i	-7
right . in	4		-9
right . it	18	-10	-20
right . leave	15	-20		13
right . need		-10
right . new	17	-12
right . old	19
right . on	13	-6		-12
right . open			17	-7
right . order	-25	-15		30
right . please		-8	13	-4
right . pull	13
right . run	16
right . she	-24			30
right . still	22	-24	-8
right . swap	15
right . tenant	-14		19	-5
right . the				23
right . use	4
right /	-13	7	-16	14
right :	9
right : G	15
right : kitchen	19
right : the	12
right ;	-4		24
right ; G	-49	-4	38
right ; i	-6	13
right =	22			-4
right ?	25
right @	-5	11
right @ Q	-26	17	-8	14
right G		9	-10
right Q #			15	-13
right Q ,	17
right Q .	36	-16
right Q G	-34	-19		41
right Q Q		11		-18
right Q all	24			-14
right Q and	26
right Q at	4
right Q i	18
right Q no	7
right Q of	7
right Q on	13
right Q short	13
right Q so	13
right Q the	8	-24		11
right Q to	18			-5
right T ,	-5		15
right T Q					6
right T and	15
right T i	7
right T if	30	-22
right T once	6
right T the	12
right T to	-12	18		-5
right a G		6
right a Q	-32	42
right a little	23			-6
right about	7
right about the	17	-4
right above	11
right above the	13
right across	24
right across the	14
right after	16
right ain't	11
right all Q	15
right all around	30			-16
right all over	12
right all round	22			-11
right all the	27
right all up	14
right along the				4
right already			16	-7
right also		9		-7
right and G	-4	30
right and N	-19			9
right and Q	-28	25
right and T		12
right and a	-38
right and about	-22	14		5
right and don't	22	-12
right and for	-19		23
right and half		-26	-7	14
right and have				12
right and he's	-17	21
right and i'll	-29	30
right and i've		-26	-19	18	6
right and is				6
right and it	8
right and let		11		-11
right and my			-14	7
right and no	14	-19
right and nobody	18
right and now	5
right and pack	-9	17
right and paint	34	-11		-20
right and put		-19		15
right and redo	16
right and reset	7
right and seal				8
right and she's		-14	-5	12
right and somebody	16	-10
right and tape	-16			27
right and tell		18	-9	-18
right and that	13	11		-26
right and that's	-10		8
right and then		13		-23
right and there's		-21		9
right and they	20
right and they're	-12	-11		22
right and we			9
right another	15
right anyway	29
right are Q	34
right are all	40
right are at	24
right are cut	12	-10	4	-17
right are do	18
right are hang	-23			30
right are in	-18	-20	29
right are on				19
right are set		-10		5
right are shot	14
right are up	-11	-17	-12	30
right aren't		9
right around				6
right around the		-12		19
right arrive			18
right as	13
right as a				5
right ask	18
right at G	16
right at N	12
right at Q		4
right at all	15
right at it				11
right at the	26
right back				-11		20
right back on		17
right be	8
right be N	11
right be Q	36
right be hang	18
right be just	17
right be leak	-14	21
right be loose	15
right be pack	20
right be weep	6
right because						16
right because the						11
right before i	-6	20		-12
right before that		13
right before the		4
right behind G	17
right behind it	16
right behind the	13
right below	13			-5
right bend	17
right bend ,	17
right between	14
right between the	8
right bind	10
right bolt			-7
right both				21
right both G	25
right both side	-9			17
right box				9
right break ,	-20		5	16
right bring	16
right bubble	7
right burn	10
right but	11
right but Q		-5	14	-12
right but i	8	-6			5
right but it	6
right but the	32
right buy	29	-14			-20
right by G	36	-19
right by Q		9
right by the	29
right call	33	-12
right can go	8
right can't		7
right can't go	13
right catch	6
right caulk	13
right cause	4			-7
right cause i		9
right cause the	23
right change				15
right chew	13
right chip	24
right clean	11
right close				4
right come Q	-27	-12	23	7
right come T					11
right come and	26
right come back	28
right come on	16			-5
right come out	30
right come up	31
right come with	-5		24	-9
right cover	21
right crack ,	-11	15
right crack .	28	-5
right crook	16
right crush	8
right dead	20
right deliver	-8		23
right didn't				15
right do		10
right do ,	26			-5
right do .	16
right do it	-42	41	-19
right do not	27
right do the	17
right doesn't	17
right don't let				8
right down ,	-5	-6		16
right down .	10
right down and	32			-8
right down from	16
right drill	7
right drip	9
right drip ,	9
right drop	7
right dry	14
right dump	9
right each		-17		5
right eat	15
right every	16
right extra	-21		9	13
right fill	19
right finally	15
right finish	7	-6
right finish ,		-15	-14	17
right fit				24
right fit ,	-24			33
right fix	-10	-9		23
right flush	14
right for G	-29	29	-4
right for Q	34
right for T	13
right for it		19		-15
right for now	-18			33
right for that	-20	18	11	-25
right from Q	-26			29
right get Q	9	-26	12	-6
right get a	19
right get its	13
right get no	-8	14
right get their	-4			14
right give	-15			26
right glue	-28	-6		39
right go ,	-21	-11		34
right go .	15	-11	-9
right go Q	27			-12
right go T	13
right go in	-4			19
right go on	-19			26
right go through	29			-9
right go up	12
right gonna be		16	-8	-9
right good	-10		21
right hang				18
right hang ,	-13			28
right hang Q	12
right hang and	39			-21
right hang but	24
right hang by	16
right has	20
right has Q	7
right has a	21
right has no	30			-16
right hasn't	-6	16
right have	12
right have Q	12
right have a	20
right have no	6
right have the	29	-6
right have to	-12		5			11
right he say	5
right he'll	20
right he's	20
right head	-15	8		11
right her	9
right here	-8	-7	29
right here .	-18		22
right him	12
right his	-8	15
right hook	7
right hook up	7
right i already	-11	27		-14
right i am	16
right i count	-25	-11	30	-17
right i cut	19
right i do	-4			14
right i don't	-18	25
right i finish	18
right i give	-9	-14	-14	-10		24
right i glue	-12			17
right i go	25	-8
right i have	-37	-8	39	6
right i know	14
right i leave		-7	8
right i make	13
right i no	15
right i run	20	-10
right i set		10
right i swear	11	-6
right i take	18
right i think		8		-15
right i use			-11	20
right i want	-15	24	-9	-18
right i'd say	13
right i'll	30
right i'll be	19
right i'll bring	12
right i'll do	20	-16
right i'm	6
right i'm gonna	14	-11
right i'm not	6
right i'm out	-8			10
right i'm stick	9
right i've			27	-16
right i've get	-27		37	-19
right if you	12
right in #	-9	6
right in ,	-26	-17	-11	60
right in .		-12		11
right in G	5
right in N	17
right in Q	34
right in T	8	16		-23
right in all	23
right in and	-18	-6		44
right in at	25
right in but	-11		-8	25
right in hall	25
right in it		-17		18
right in living room	14
right in my	-14	-19	30	-25
right in that	26
right in the			17
right in the kids	30		-14	-18
right in there			-5	4
right inside	-5		15
right into		-20	-9	19
right is N	19
right is Q	17
right is T	24
right is all	21
right is at		-23	13
right is bad	20
right is bend	12
right is break	33		-16	-12
right is crack	30
right is cut	15
right is do	21
right is down				8
right is dry	8
right is empty	-16	21	-9	-7
right is fine	24
right is finish				20
right is glue	32
right is go	-6	-13		30
right is gonna	-8	18	-15	-5
right is good	24			-6
right is hang	30
right is leak	16
right is leave	-20	-10	16	15
right is miss	9
right is not	14
right is off	8
right is only	24
right is out	23
right is run	16
right is set	10
right is short	18
right is sit	9
right is split	20
right is tear	10
right is the	32
right is to	18
right is wet	11
right isn't	10
right it ,	22
right it .	23
right it T	15
right it and	15
right it back	15
right it be	31
right it down	12
right it need	-5			12
right it on	17
right it out	10
right it take	-15		-10	25
right it up	7
right it when	-17			21
right it'll		12
right it's Q				6
right it's a		5
right it's not	-26			13		18
right it's the	29
right just	31			-10
right keep	12
right land			12
right leak	13
right leaning	-10	-15	16	-18		19
right leave			56
right leave #	-33		52
right leave ,	-7		26
right leave .			34
right leave and	-39		52
right leave from	17		-12
right leave in			25	-10
right leave it	16
right leave on	11			-15
right leave over			20
right leave so	-5		17
right leave the	5
right let	11
right level				10
right lift	7
right loose	-7		22	-12
right lose		10
right lower	15
right me	26
right me Q	17
right measure	18
right measure Q	12
right miss 
		5
right miss ,	32	-7
right miss .	27	-21		-13
right more		21
right more #	-28	29
right more ,	-32	32
right more .	-17	24
right more and	-24	26	-13
right more to	18			-4
right mount				8
right move	8
right my	22
right near	15
right near the	27	-4
right need .		21	-9	-8
right need Q	42	-31
right need T	19
right need a	36	-22	-5	-5
right need to	17
right never				9
right next	-8	19
right next to		6
right no .	-39	31	-10	5
right no G	-40	29	-13
right no have	22
right no i	16	-24	24	-22
right no sorry	25	-17
right nobody	-5		6
right not before	13
right not the	7
right nothing	18
right now #	15
right now ,	33	-23		-14
right now .	38			-11
right now and	-12	-17	-20	-17	25
right now i	18
right now is	-46			51
right now it	-27	-13	-16	35
right now so	9
right now the	17
right of Q	-9
right of T	-16	-8		22
right of em		-5	-12	10
right of it			12	-17
right of my	22
right of that		25
right of the	11
right of them	19
right of those	-9	24	-25	-16
right off	23
right off .	11
right off T	25
right off and	6
right off it	23			-11
right oh		7
right oh and		12
right ok	30
right ok 
	11
right ok .	24			-4
right okay	18
right on #	14
right on ,				10
right on .	-17	-12		45
right on G		-21
right on N	15
right on Q	55			-25
right on a	15
right on all	-6			14
right on and	40			-16
right on every	25			-17
right on hand		-29	34	-25
right on in	37
right on it	10
right on me	-32	35	-9	-16
right on my	4	9		-14
right on order	-51			-5	63
right on site	-16	-29	36	-37
right on so				18
right on that	-16		8
right on the	8
right on till	9
right only	11	-8
right only Q	12
right or	14	-10
right or a	10	-4
right order	-17	13		-14	16
right out ,	29
right out .	19
right out Q	22		-10	-9
right out T		16
right out and	31
right out back	14
right out front	7
right out in	-7			14
right out of		-27		26
right out of plumb	7
right out the	21
right out to	23			-12
right over ,	-29	-25	14	-26		23
right over Q	13
right over it	-6			13
right over to	24			-18
right paint	6
right peel		14
right pick	20	-17
right pipe	19			-15
right pitch	-13	-10		19
right place	11
right plug	25
right plug solid	24
right plus	-39	22		9
right prime		11
right pull	24
right pull Q	5
right pull out	9
right rack				5
right rattle	9
right read	9
right read Q	8
right replace	-9	-6		22
right replace ,	10	-6
right return	5
right right	32
right right down	6
right right where	12
right rip	13
right roll	-17		23	-14
right rough	6
right rub	15
right run Q	5
right rust	16
right sag	5
right say Q	21
right scrape	8
right scratch						18
right screw	-7	-7		18
right seal		17		-6
right see	9
right seize	15
right send	20
right set	32			-16
right she say	25	-18
right she want	4
right she's	8
right shim	16
right short		23	-6	-18
right short ,	23	-4	-14	-29
right short .	-33	47	-21	-16
right short Q	28	-13
right short by	-6	14
right short so	19	-7
right shot	-13	18
right should	-16	24
right show						4
right show up						10
right since				8
right since the	-13			21
right sit	18
right sit Q	6
right sit in	-5		18	-7
right sit on	15	-5	-8
right snap	15
right so G	11		-15
right so Q	18	-14
right so T	21
right so a	31	-6
right so ask	-10	17
right so bring	-4		12
right so don't	6
right so get	-27	8	5		13
right so grab	-9	15
right so he			10
right so i'm	31
right so i've	6
right so it	26
right so leave	4
right so no	6		-15
right so nobody	14
right so order	30	-23
right so pick	4	-8
right so she	14
right so somebody	-4	-10	16
right so that's	18
right so the	25
right so there's	29		-23
right so they	12
right so those	14
right so we	31		-16
right so we're		-13	13
right some	14
right somebody	6
right somebody leave	26	-15	-7
right sound	15
right spare	-30	-13	34	-20
right split	23
right spray	18
right square	-12	20
right squeak	6
right stand				11
right start	25
right stay	7		16	-21
right stick ,	-7			14
right still			30	-11
right still has			8
right still in	-16	-20	34	-19
right still on	-33		38	-31
right still to	32		-16
right strip	9
right swap				18
right swap ,	-8			15
right sweat	-8	16		-5
right take	5	-7				13
right take Q	21
right take the	12
right tape	-14	-9	10	13
right tear ,	23
right tell	-15			13
right test	9
right than the	15
right that G	9
right that N	5
right that be					-15	20
right that come	25		-13	-8
right that go			15	-8
right that is	11	-4	-4
right that's Q	37	-4
right the G		11
right the N	27			-7
right the Q	-37	35	-7	-18	17
right the box	28	-12
right the guy	16	-5	-6
right the hinge		-11	16
right the inspector		9		-6
right the leave				4
right the old	-17		-18	33
right the other	-13	-11	20	-13
right the size	23
right the wall				8
right them	8
right then	-11	13	-10	7
right there		10
right there be	23
right there is	14
right there's				29
right there's Q			-7	16
right there's a				10
right there's no	-9			16
right they	-6
right they give	-23		16		18
right they go			-7	-5	16
right they send	-18		20	-5
right they want	28
right they're		-7	13
right they've	-20	11	14	-8
right those	6
right through	10
right through it	14
right til	14
right til T	10
right till the	14
right to G	32	-11		-13
right to Q	51
right to be		22		-7
right to corner	16
right to go	27	-5		-30
right to look	17
right to the						18
right to wall	22
right to you	5
right too	-10
right too so				14
right top	15
right toward	5
right toward the	5
right trip	7
right turn			13
right under	8
right under G	15
right under it	23		-7
right under there	18
right unopen	-24	-12	33	-19
right until T	23
right until the	18
right up ,	-37	-11		52
right up .	12
right up Q	12
right up T	16
right up and	16
right up at	24
right up on		-12		11
right up the		-9		13
right up there	32	-19		-14
right up to	16
right use				25
right use ,				20
right use .	-35			44
right use Q	21			-9
right want		8
right want Q			10
right want a	20
right we			6
right we go	27			-7
right we have		-4	14
right we'll				8
right we're	18	-22
right were	5
right when you	14
right which i	-11		16	-9
right which is	19
right wire	6
right with	9
right with G	31			-9
right with Q	13		-22	7
right with it	12
right with me		15	-10
right with no	30
right without	18
right wobble		-5	6
right won't						13
right won't sit	-20	-5				25
right wont	6
right work	7
right would		11	-10	-8
right wouldn't	18
right you	27
right1 
		18
right1 !	13
right1 #.		5
right1 &	-16	13		5
right1 '	12
right1 (	-12		5	-27	5	7
right1 )	-5
right1 +	-9	4		9
right1 -	10
right1 /	-13	7	-16	14
right1 :	9
right1 ;	-4		24
right1 =	22			-4
right1 ?	25
right1 @	-5	11
right1 G		9	-10
right1 about	7
right1 above	11
right1 across	24
right1 after	16
right1 ain't	11
right1 already			16	-7
right1 also		9		-7
right1 another	15
right1 anyway	29
right1 aren't		9
right1 around				6
right1 arrive			18
right1 as	13
right1 ask	18
right1 back				-11		20
right1 be	8
right1 because						16
right1 below	13			-5
right1 bend	17
right1 between	14
right1 bind	10
right1 bolt			-7
right1 both				21
right1 box				9
right1 break.		18
right1 bring	16
right1 bubble	7
right1 burn	10
right1 but	11
right1 buy	29	-14			-20
right1 call	33	-12
right1 can't		7
right1 catch	6
right1 caulk	13
right1 cause	4			-7
right1 change				15
right1 chew	13
right1 chip	24
right1 clean	11
right1 close				4
right1 cover	21
right1 crook	16
right1 crush	8
right1 dead	20
right1 deliver	-8		23
right1 didn't				15
right1 do		10
right1 doesn't	17
right1 drill	7
right1 drip	9
right1 drop	7
right1 dry	14
right1 dump	9
right1 each		-17		5
right1 eat	15
right1 every	16
right1 extra	-21		9	13
right1 fill	19
right1 finally	15
right1 finish	7	-6
right1 fit				24
right1 fix	-10	-9		23
right1 flush	14
right1 give	-15			26
right1 glue	-28	-6		39
right1 good	-10		21
right1 hang				18
right1 has	20
right1 hasn't	-6	16
right1 have	12
right1 he'll	20
right1 he's	20
right1 head	-15	8		11
right1 her	9
right1 here	-8	-7	29
right1 him	12
right1 his	-8	15
right1 hook	7
right1 i'll	30
right1 i'm	6
right1 i've			27	-16
right1 inside	-5		15
right1 into		-20	-9	19
right1 isn't	10
right1 it'll		12
right1 just	31			-10
right1 keep	12
right1 land			12
right1 leak	13
right1 leaning	-10	-15	16	-18		19
right1 leave			56
right1 let	11
right1 level				10
right1 lift	7
right1 loose	-7		22	-12
right1 lose		10
right1 lower	15
right1 me	26
right1 measure	18
right1 more		21
right1 mount				8
right1 move	8
right1 my	22
right1 near	15
right1 never				9
right1 next	-8	19
right1 nobody	-5		6
right1 nothing	18
right1 off	23
right1 oh		7
right1 ok	30
right1 okay	18
right1 only	11	-8
right1 or	14	-10
right1 order	-17	13		-14	16
right1 out of plumb	7
right1 paint	6
right1 peel		14
right1 pick	20	-17
right1 pipe	19			-15
right1 pitch	-13	-10		19
right1 place	11
right1 plug	25
right1 plus	-39	22		9
right1 prime		11
right1 pull	24
right1 rack				5
right1 rattle	9
right1 read	9
right1 replace	-9	-6		22
right1 return	5
right1 right	32
right1 rip	13
right1 roll	-17		23	-14
right1 rough	6
right1 rub	15
right1 rust	16
right1 sag	5
right1 scrape	8
right1 scratch						18
right1 screw	-7	-7		18
right1 seal		17		-6
right1 see	9
right1 seize	15
right1 send	20
right1 set	32			-16
right1 she's	8
right1 shim	16
right1 short		23	-6	-18
right1 shot	-13	18
right1 should	-16	24
right1 show						4
right1 since				8
right1 sit	18
right1 snap	15
right1 some	14
right1 somebody	6
right1 sound	15
right1 spare	-30	-13	34	-20
right1 split	23
right1 spray	18
right1 square	-12	20
right1 squeak	6
right1 stand				11
right1 start	25
right1 stay	7		16	-21
right1 still			30	-11
right1 strip	9
right1 swap				18
right1 sweat	-8	16		-5
right1 t area.	26
right1 t defect.	16
right1 t finish.	-7			4
right1 t fixture.		7	-5
right1 t material.	-22	37	-20	-7
right1 t part.		-21	-17	20
right1 t role.	-4			8
right1 t surface.	20	-12		-24
right1 take	5	-7				13
right1 tape	-14	-9	10	13
right1 tell	-15			13
right1 test	9
right1 them	8
right1 then	-11	13	-10	7
right1 there		10
right1 there's				29
right1 they	-6
right1 they're		-7	13
right1 they've	-20	11	14	-8
right1 those	6
right1 through	10
right1 til	14
right1 too	-10
right1 top	15
right1 toward	5
right1 trip	7
right1 turn			13
right1 under	8
right1 unopen	-24	-12	33	-19
right1 use				25
right1 v buy.				6
right1 v have.	12
right1 v need.		7
right1 v return.	12
right1 v say.	7
right1 v see.	16
right1 v use.				25
right1 want		8
right1 we			6
right1 we'll				8
right1 we're	18	-22
right1 were	5
right1 wire	6
right1 with	9
right1 without	18
right1 wobble		-5	6
right1 won't						13
right1 wont	6
right1 work	7
right1 would		11	-10	-8
right1 wouldn't	18
right1 you	27
right2 
		-9
right2 !	17
right2 &	-5	-17		22
right2 (	6			-10	5
right2 *	12	-29	-13	14
right2 +				10
right2 :	18
right2 @	-10	-4		23
right2 about	16
right2 above	28
right2 across	11
right2 add	-10	14
right2 adjust	9
right2 after		11
right2 again	29
right2 ain't		16	-18	-15
right2 air	30			-16
right2 along	-13	21		-5
right2 already		13	8	-6	-9
right2 also		4
right2 am	8
right2 an		7
right2 anything		10		-6
right2 anyway	15
right2 around	33			-13
right2 as	24
right2 ask	-7	11
right2 at	8
right2 backsplash	15
right2 backwards	23
right2 bad				8
right2 balance	-7	-21	19
right2 bath	21	-14
right2 bathroom	27
right2 because	27	-11
right2 bed				6
right2 bedroom	14
right2 bedroom 2	12
right2 before	27
right2 behind	15
right2 bend	8
right2 big		18		-17
right2 black	22
right2 blow	27		-19
right2 bolt		-9		10
right2 book	21	-7
right2 bore			15
right2 both	26
right2 bottom	-4	13
right2 bow	18
right2 box	9	-13	-17	12
right2 break	20		-4
right2 break.		-9
right2 bring	-4	7
right2 brown	-20	30
right2 build		-5		8
right2 buy	12			-24
right2 can't		13
right2 catch	18
right2 caulk	13
right2 cause	35		-5	-9
right2 ceiling	4			-7
right2 center	20	-13
right2 change		-16		16
right2 chase		5		-8
right2 chip	-10					23
right2 clamp	25
right2 clean	25
right2 clear			8
right2 clip	15
right2 clog	12
right2 close		-9	17	-10
right2 coat		-11		10
right2 cold	20
right2 come	14
right2 complete	19
right2 corner	22
right2 could	21
right2 count	-13	-13	23	-16
right2 cover	-4
right2 crack			7
right2 crook	25			-7
right2 customer	19
right2 cut out			9
right2 damp	-20	24
right2 date	37	-17		-24
right2 day	11
right2 dead	13
right2 deliver	-26	14				19
right2 den		14
right2 didn't			13
right2 dig	14
right2 dining room	7
right2 don't	22
right2 down	20
right2 drain	-6			21
right2 draw				5
right2 drill	30			-10
right2 drip	31	-5
right2 drop	22
right2 dry	20
right2 due	-25	-15		-9	42
right2 dumpster	10
right2 each	24	-10
right2 eat	15
right2 either	17	-6
right2 electrician		13
right2 em				7
right2 empty	-7	18
right2 end	11	-6
right2 epoxy	22			-12
right2 every	24			-20
right2 everything		18
right2 everywhere	16
right2 except	19
right2 extra	-28	18	18	-34
right2 fasten	-7			15
right2 fill	15
right2 finally	10
right2 find	23
right2 fine	4
right2 finish		-8
right2 first	28	-21
right2 fit	-9				10
right2 fix		-11		11
right2 flash	20
right2 flat	14
right2 float	18
right2 floor			9
right2 flush	17
right2 for	-19	9
right2 from	10
right2 front	-17	-15		28
right2 gap		-8		13
right2 gary	-7	-8		19
right2 give		-15	5	-27		13
right2 good	-8			6
right2 gotta	14
right2 grind	12
right2 guy	16	-5	-6
right2 hair	6
right2 half		-8		9
right2 hall		9
right2 hand		-18	31	-19
right2 hang				4
right2 hard	26
right2 he	34
right2 he'll	29	-12
right2 her				-20
right2 here	21
right2 high		8
right2 him	-24	4				22
right2 hinge	-6	-7	7		13
right2 his			11
right2 hit	21
right2 hole	30			-23
right2 hollow	15
right2 home	-24		29	-14
right2 hook	18
right2 hot	32
right2 house	24
right2 i'd	27
right2 i've		-20
right2 if	28	-18
right2 in			17
right2 inside	17
right2 inspector		19
right2 install	-32			27	14
right2 into		-6	-9	11
right2 is	18
right2 isn't	13
right2 it'll	18
right2 its	20
right2 joint	-7	19		-15
right2 just	27
right2 keep	6
right2 know	14
right2 last				5
right2 latch		7		-22
right2 lay		6
right2 leak	6			-4
right2 leaning	-7		15
right2 leave		-13
right2 let		16
right2 level	35
right2 like	8
right2 little	25
right2 live	17
right2 living room	-6			14
right2 long	23			-7
right2 lose	10
right2 low	15
right2 lower	19
right2 luis	17
right2 maple	5
right2 mark	20			-12
right2 maybe	8
right2 me		12	-16	-5
right2 measure	9
right2 mind	12
right2 mine	-20	13	13	-9
right2 miss	17			-5
right2 more				8
right2 mount	-21			33
right2 move	22
right2 mrs	-11				13
right2 must	-8	9
right2 my	-10		31
right2 nail	20
right2 near	16
right2 never	-19	16	14
right2 next	-13	19
right2 night	13
right2 no	16
right2 nobody		-10		9
right2 noon	27
right2 notch	20
right2 nothing			6
right2 notice	14
right2 now				22
right2 number	24	-4		-15
right2 of				5
right2 off	37
right2 oh		16	-9
right2 oil	21
right2 old				16
right2 once	35	-7		-15
right2 one's	18	-33	-32		10
right2 ones	-10	5	22	-26
right2 only	23	-10
right2 open		-24	15
right2 or	7	6	-7	-15
right2 order	-31	-12			50
right2 other	7	-30	23	-39
right2 owner				-5
right2 paint				8
right2 painted shut	7
right2 painter	-4	18		-11
right2 pass	25	-11
right2 patch	16
right2 pick		6
right2 piece	-18			27
right2 plane	13
right2 plate	-4	-30	-7	39
right2 please		-14	20	-6
right2 plug	-16	10		5
right2 plumb	-16	-10	-9	26
right2 pop	27
right2 pour	17
right2 prime	-5			13
right2 pull	10
right2 punky	6
right2 quiet	-16	-11		24
right2 rain	23	-20
right2 raise	26	-10
right2 rate	5
right2 reach	22
right2 read	25
right2 ready	7
right2 recheck	-16			17
right2 redo	19
right2 reglue	14
right2 rehang	9	-17		4
right2 reorder	23
right2 replace	-26	-13		41
right2 require	-13	9	9	-17
right2 reset	27
right2 rest	9		-10
right2 return	21
right2 right	4
right2 ring	29			-15
right2 rocking	13
right2 roll	-7	-19	-8	19
right2 rot	25			-10
right2 round	24			-8
right2 run	48			-18
right2 rust	19
right2 rusted through	4
right2 sag	6
right2 same	-30			27
right2 scratch	19	-9
right2 screen	29
right2 screw	8	-18	14	-4
right2 seal		-14	6
right2 seat		-6		15
right2 second	-6			14
right2 send	-8
right2 she				5
right2 shim		15
right2 short					7
right2 shot	23	-13
right2 should		10
right2 show						17
right2 shut	-14		10	5
right2 side	-6			25
right2 sit	-5					10
right2 site	-16	-29	36	-37
right2 size	-5	9
right2 slab	4
right2 slow	12
right2 smell	7
right2 snap	6
right2 snug	5
right2 so	9
right2 soft	15
right2 solid	-5			28
right2 something	13
right2 sorry	24	-15
right2 split	-17			17
right2 spray	31			-18
right2 square	10	-10	-8	-23	17
right2 stain			-5			14
right2 stairs		7
right2 stand	19
right2 staple	12
right2 start	7
right2 stay	27	-8	-12	-6
right2 stick			11
right2 still				8
right2 straight	-14			18
right2 strike	19
right2 strip	13
right2 supplier		5
right2 supposed	-12			-7	22
right2 sure	-15	21
right2 swear	10	-4
right2 t surface.	10
right2 t tool.	7
right2 t work.	11	-20
right2 tag	8
right2 tank	10
right2 tear	15
right2 tenant		-8	13	-18
right2 text	15
right2 that'll					12
right2 that's	6
right2 the kids	30		-14	-18
right2 the lady		17
right2 their			10
right2 then	14
right2 there		-12		12
right2 there's	13	-8
right2 they're	-16		5
right2 thick	10
right2 thing	-7	-19	-13	10	12
right2 think		4		-9
right2 third	32			-28
right2 this	35			-12
right2 those	7
right2 though	13
right2 tie	14
right2 tight	13
right2 tighten	6
right2 tile		-15	15
right2 till	23
right2 to	13
right2 toe	19	-6
right2 too		11
right2 too short	23	-8		-7
right2 top	33
right2 touch	26			-4
right2 trace	11
right2 trim	27
right2 turn	24
right2 twist	17
right2 under	15	-14
right2 underneath	17
right2 unit	18
right2 us	12
right2 use				9
right2 v buy.					27
right2 v return.	24
right2 v use.				9
right2 wait	30	-12
right2 wash	8
right2 water	20			-7
right2 way	27			-15
right2 we	14
right2 we're			5
right2 weep	12
right2 wet	19
right2 what	14
right2 what's	25	-22
right2 when				16
right2 where	33			-5
right2 which	7		-5
right2 while	-28	7		17
right2 white	-29	29
right2 whoever	8
right2 whole	5
right2 will	29
right2 wire	8
right2 without	21
right2 won't	8
right2 work				10
right2 wrap			6
right2 you	23
right2 you'd	-8			14
right2 you're	-10	24			-6
right2 your	15
right3 &	-25	13		14
right3 (		-18	23	-21
right3 )	17	-8
right3 +	16	-9	-4	6
right3 /	16	-8
right3 :			9	-6
right3 ;		-5	9
right3 T	7
right3 about	30
right3 across	26
right3 add	21	-12
right3 adjust	25			-20
right3 after	22
right3 again	21
right3 air	8			-9
right3 almost		-18		13
right3 already	-37		5		22
right3 also	-30	24		12
right3 anchor	-16			21
right3 another	-12		23
right3 anybody		-5		12
right3 anything	-6	15		-6
right3 anyway	8
right3 are			8	-5
right3 around	-21			30
right3 as				12
right3 ask	25	-20
right3 b	-20	24
right3 backwards	19
right3 bad	21
right3 bag	-16	6
right3 bar	-7			17
right3 basement			15	-5
right3 bath	7
right3 bathroom				12
right3 bay	23			-6
right3 because	13
right3 bed	12
right3 before	5			-8
right3 belly	18
right3 below		-7		10
right3 bench	-9
right3 bend	19	-7		-16
right3 black	15
right3 block	7
right3 blow	29
right3 boards		-16	-8	17
right3 bolt	-9	-14		27
right3 bone	-15	8		14
right3 book		9
right3 borrow	18	-12
right3 both	10
right3 box	-30	5	30
right3 bracket	-5			6
right3 break	-38		30	6
right3 but	7
right3 button	-22			29
right3 buy	-11	19		-13
right3 buzz	26			-17
right3 call	22
right3 came off		-8	15
right3 catch	9
right3 cause	32
right3 ceiling	4	-13	-10	15
right3 cellar			12
right3 check	37
right3 chip						16
right3 clamp	-28	14		18
right3 clean	-6	5
right3 clear	17
right3 clip		17		-5
right3 close	18
right3 closet	22
right3 coffee	-8	-17		21
right3 color	27	-20
right3 corner	8			-20
right3 could	15
right3 couldn't	19
right3 counter		-19				17
right3 crack	17
right3 crook	12
right3 cut	42
right3 cut out	13
right3 dead	40			-12
right3 deep	34
right3 den	24
right3 didn't	-15	-18		-8	25
right3 dig	5
right3 do	11
right3 dog	10
right3 don't		11		-5
right3 doorway	6
right3 down	21
right3 drill	-14			21
right3 drip				9
right3 drive	18
right3 drop		14		-5
right3 duct	16
right3 dump	14
right3 each				18
right3 eat				12
right3 edge	31			-21
right3 electrician	26
right3 else	-25	35		-21
right3 enough			8
right3 even				8
right3 ever	19
right3 every	20
right3 everything	-14			13
right3 everywhere	6
right3 except	26
right3 extra	-17	26		-20
right3 face		7
right3 figure	-12			18
right3 file	9
right3 fill				11
right3 find				6
right3 fireplace	15
right3 first	-10	-4	23	-13
right3 first coat	26			-4
right3 fit	34			-26
right3 fix	45	-19		-23
right3 flat	5
right3 floor	31
right3 flush				8
right3 foot	13
right3 for	11			-15
right3 fourth	11
right3 frame		5		-10
right3 freeze	24	-5	-15	-11
right3 from	14
right3 front	26
right3 gap	7
right3 garage			4
right3 gas	-16	12		6
right3 give	-10					17
right3 glue	39			-22
right3 go	13
right3 gonna	13
right3 good	30
right3 gotta	23
right3 grab	-7	18
right3 grind			12
right3 grout	-12		17
right3 guest room	24	-21		-11
right3 half	-32		34
right3 hall	34
right3 hall closet	29			-5
right3 hallway		13		-9
right3 hand	-7	-8	31	-20
right3 hang	25
right3 happy	9
right3 hard				10
right3 has		6
right3 he'll	15
right3 he's	35			-11
right3 head		-10		8
right3 hear	14
right3 heat	13
right3 here	-13	-13		-9	18
right3 high	24
right3 higher	8
right3 him	13
right3 hinge					5
right3 his	20
right3 hold	24
right3 hole	21
right3 hook	-10	6
right3 hot	8			-6
right3 house	16
right3 how				12
right3 hum	24	-23
right3 hump	4
right3 i've	33	-14
right3 if		7
right3 in			10
right3 inside	23			-4
right3 inspector	-9	6
right3 island	-16		6	6
right3 it	7
right3 it's	14
right3 its	22
right3 joint	-16		14
right3 keep	-5	15	-6
right3 kitchen	44
right3 knock	6
right3 know	17
right3 lag	17			-11
right3 land	29		-9
right3 last	7
right3 latch	6
right3 lay	12	-7			7
right3 leak	11
right3 leave				6
right3 let	12
right3 level		-10		5
right3 lid	-26	13
right3 like	12
right3 line		7
right3 linen closet		11		-10
right3 lip	-7			12
right3 list	-9	34		-19
right3 little	-23		22
right3 lock	-5	15
right3 long	-5	9
right3 look	18
right3 loose			-22	7
right3 lot	-9	-17	21	-15
right3 low	25		-15
right3 lower	28	-4
right3 lunch	22			-14
right3 make	34	-22
right3 man					7
right3 maple	-6	6
right3 match	20
right3 maybe			-11	11
right3 me	-9
right3 measure	23
right3 middle	10
right3 miss		14
right3 more	6	-13	15
right3 move	-19	9		9
right3 must	28
right3 my	-7		13
right3 nail	11
right3 near	16
right3 new	9
right3 next		15		-5
right3 no		-10
right3 nobody		-21		7
right3 none	13	-26	16	-17
right3 north side	7
right3 not	15
right3 now		-6		38
right3 number	28			-9
right3 nursery	14
right3 off	43
right3 office	-20	-12	13	8
right3 ok	30			-6
right3 okay	13
right3 once	10
right3 one's	-7			11
right3 ones	-15	10		11
right3 only	10
right3 open	16
right3 opened up		17		-16
right3 opening's	-25			15	17
right3 or		-7	12	-4
right3 order	8			-8
right3 other	40
right3 out	7
right3 out of plumb	7
right3 outside	36	-11
right3 outta	25	-17
right3 over	23	-13
right3 owe	4
right3 own	29	-19
right3 owner		19	-15	-12
right3 pack	25
right3 paint	21	-11
right3 painter	21
right3 pantry		-6	18	-26
right3 paper	18			-12
right3 part	18
right3 pass		7
right3 past	19
right3 patch		-10
right3 pieces	15
right3 pin				12
right3 pipe	10	5		-10
right3 pitch				7
right3 place	19
right3 plane	8
right3 plate	-26			21
right3 please		12
right3 plenty	-46	-19	49
right3 plug				5
right3 plumb	19
right3 plus	-7	26	-15
right3 point	22
right3 porch	35			-9
right3 pour	15
right3 powder room	-27		21	8
right3 prime	24			-5
right3 proud	20
right3 pull	18			-9
right3 quit	5
right3 rake	-16	19
right3 read	20
right3 red	-16		22
right3 redo	10
right3 reglue	20
right3 replace	-21	25
right3 reset	16
right3 return			13	-10
right3 right				10
right3 rm	27			-7
right3 roof		7
right3 room	17
right3 run				8
right3 rust	11
right3 salon	-9			16
right3 same					8
right3 sand	-17			15
right3 scrap	22			-6
right3 scrape	9
right3 screed	12
right3 screw		-5
right3 scribe	12
right3 seal			-8	8
right3 seam	29	-12		-21
right3 second			10
right3 second coat	9
right3 send	18
right3 set				5
right3 she	-7	20
right3 she's	20
right3 sheath	11
right3 shed	-8	-10	23	-23
right3 shim		-10		16
right3 shop	-13		15
right3 short	-10	14
right3 shot	13
right3 should	11	-15			11
right3 show	5			-6
right3 shut	13
right3 shy	34	-10
right3 side	40
right3 sign	13
right3 silicone				10
right3 sister	6
right3 sit				7
right3 slab		7
right3 slope	-6			13
right3 smell	18			-12
right3 smooth				7
right3 snap	-16	20
right3 soft	-4	17		-9
right3 solid	-8			22
right3 sort	15
right3 sound				5
right3 sparky	8	-5
right3 splice	-15			20
right3 split	31	-14
right3 spot				10
right3 stack	-14		18
right3 stain	25			-19
right3 stair	-4	13
right3 stairs	7			-7
right3 stand	-18			21
right3 staple	12
right3 start	23
right3 stay	-19	9		13
right3 stick	7
right3 still		-7	-5	30
right3 store	-17	-18	24	-7
right3 straight	-12	-11		27
right3 street	19
right3 strike	18
right3 strip	-12	-8		26
right3 study	-8		21	-14
right3 stuff	7
right3 supposed	13
right3 sweep		17		-10
right3 swing	-7			-9		19
right3 tag		15
right3 take		-15	18	-26
right3 talk	14
right3 tank	18
right3 tap	10
right3 tape	5		-9
right3 tear	36			-15
right3 tell	40	-5
right3 tenant	13
right3 test	11
right3 than	14
right3 that	11
right3 the wrong	-32	-26	14	-19	-6	23
right3 the yard					19
right3 them	9
right3 there	23
right3 there's	7
right3 they're	7	-12
right3 thing	-16	5		9
right3 third	10	-4
right3 this		-15	-4	12
right3 those		4
right3 though	-16	13		4
right3 through	11
right3 throw	29
right3 tight	16
right3 tile	36	-7
right3 till	8
right3 too	7
right3 too long	7
right3 top	-12			4
right3 touch	11
right3 trim	-9	23
right3 trip	18
right3 truck	-16		12	5
right3 turn	20			-6
right3 u	13
right3 under	16
right3 unit	9			-15
right3 until		14
right3 up	44
right3 us	-11	9	5
right3 use	20			-11
right3 van	-23	-24	48	-43
right3 vent	-5	13
right3 very	16
right3 walk	10
right3 wall	34
right3 walls				9
right3 water	32
right3 we	26
right3 we're	-23	18	7	-10
right3 weatherstrip	24			-8
right3 were	11
right3 wet	13			-16
right3 where	32	-15
right3 which	11	-29	11	-13
right3 while	-21	6		14
right3 white		7		-14
right3 whole				7
right3 will	-10		4
right3 wire		14
right3 without		12
right3 wobble	-9			16
right3 wouldn't	23		-6	-7
right3 wrap		9	-10
right3 wrong	9	-12	6
right3 x	-7	-14		26
right3 yellow	10
right3 yet	33
right3 you	11
says imperative before	11
says owed before not		10
says owed behind not	10
sized	-12
sold so true	-49
sort area				19
sort pack	-14
sort volume	-24
sort weight	-8			7
then add				4
then adjust	27			-17
then adjust pp	26			-18
then ain't		5
then ain't is		5
then allow	17
then am	18
then am is	18
then arrive			12
then arrive pp			17
then ask b		6
then ask pp			6
then bag	-23	33		-27
then bag b	-27	34		-29
then balance	28
then bend	20
then bend b	7
then bend pp	25
then bind	-8	16
then bind s	11
then blow	8
then bolt		-6
then bolt pp		-6
then book b	12
then book pp		8		-6
then bore				6
then borrow	18	-12
then borrow pp	18	-12
then bow	25
then bow pp	18
then box	-8		9
then box b	-11
then bring	-8	13
then bring b	-9	10
then bring i	-20	27
then bring pp		-8	12	-6
then bubble	10
then build	30
then build pp	29	-8
then bust	6
then bust pp	6
then button				15
then button pp				15
then buy					8
then buy b				-5
then buy i	31	-7		-4
then buy pp	-14	-39	-8		47
then buzz	10
then call	17
then call b	28
then call pp		5
then can't		5
then can't will		5
then cap	22
then cap pp	22
then center	10
then center pp	10
then change		-8
then change b		-9			4
then change pp				6
then charge	16
then check	10
then check b	6
then check pp	7
then chew		9
then chew pp		9
then chip	25
then chip pp	7
then clean	14
then clean b	22
then clean pp		-5		4
then clear	15
then clear pp	21
then close b	9
then coat	-14	-6		21
then come s	34
then complete	28
then complete b	24
then consum	-16	-11	-11	25
then consum pp	-16	-11	-11	25
then cope	22			-7
then cope pp	22			-7
then core				12
then could	26	-12
then could will	26	-12
then couldn't	14
then couldn't will	14
then count		-20	17	-25
then count pp		-22	18	-27
then cover b	-12
then cover pp	7
then cover s	10	-8		-8
then crack b			11	-5
then crook	16
then crook pp	16
then crumbl	14			-18
then crumbl pp	14			-18
then crush	8
then crush pp	8
then cup	15
then cure pp	-8			15
then curl	12
then cut out	19
then cut out bpp	19
then deliver			18
then deliver pp	-8		23
then didn't	-8	-11			13
then didn't will	-8	-11			13
then die	13
then dig	15
then dig pp	15
then do b	-19	42
then do i		-24	11	9
then do p	10	-5
then do s	24
then dont	-10	17
then dont will	-10	17
then drill	11
then drill pp	11
then drip	10
then drip s	17
then drive	8
then drive p	7
then drop	21
then drop pp	19
then dry b				9
then dry pp	13	-13
then duct	17
then duct pp	17
then dump	14
then dump s	9
then dust	25	-10
then dust b	25	-10
then eat	10
then eat i	8
then eat p	7			-10
then empty	22
then empty b	22
then exchange	22
then feel	10
then feel s	9
then figure	29	-10
then figure b	28	-13
then file	7
then fill	22
then fill b	5
then fill pp	23
then find b				4
then find pp	13
then finish b	14
then finish pp				14
then fit				14
then fit pp	-16			23
then fit s	19
then fix				14
then fix b		11		-25
then fix pp	-11	-18		30
then flash	18
then float		9		-12
then float b	-5	13
then forget					10
then forget b				14
then fre	11
then fre pp	11
then freeze	25		-11
then freeze p	25		-12	-5
then get b	-6	21
then get s	12	-6
then give		-23		-6		33
then give b	-42	-7	12			17
then give p		-24		-15		27
then glue	-6			29
then glue pp	-6			29
then go b	6
then go p				31
then go s				-9
then gotta	9
then gotta will	9
then grout				12
then grout pp				12
then hang b	15
then hang i	40			-7
then hang pp				18
then hang s	27
then has	6
then has has	6
then hasn't	-9	10
then hasn't has	-9	10
then haul				6
then haul pp				9
then he'll	11
then he'll will	11
then head				13
then head b				5
then hit	6
then hit s	15
then hold	9
then hold b			-16	14
then hold i	10
then hold pp	20
then hook	9
then hook pp	6
then hum i	9
then i'd	24
then i'd will	24
then install				-9	17
then install pp		-5		-14	19
then isn't	25
then isn't is	25
then jam	24			-11
then jam pp	24			-11
then keep		8
then keep pp			8
then keep s	-4	14
then kick	11
then kill		15		-13
then kink	23
then knock	7
then know	24
then know b	18
then know s	17
then label	-20		24	-16
then land	10
then land pp			8
then land s	10
then lay	20
then lay b	7
then lay i	19
then lay pp	9
then leak	12
then leak i	7
then leak pp	31	-13		-15
then leave			6
then leave b	5		12	-15
then leave pp			5
then leave s				13
then let	7
then let bpp	17
then let s	-6	14
then level b				6
then level pp	24
then lift	8
then lift i	12
then like	30
then like b	30
then look s	4
then lose pp	16
then lower	18
then lower b	18
then make b	15
then mark	18			-10
then match		25
then match b	-8	15
then match i		6
then measure	27
then measure bpp	5
then measure s	23
then meet	16
then miss b	32	-10		-18
then miss i		10
then miss s	8
then mitre	29	-26
then mix	17
then mix pp	9
then mount				21
then mount pp	-4			23
then move	7
then move p				31
then move pp			4
then nail	19
then nail pp	21
then need pp		39		-17
then need s	8
then notch	27
then notch pp	16
then oil	-10			12
then oil b	-10			12
then open		-8
then open b	27
then open pp	-19	-23	29	5
then order				-14	55
then order b	-16				46
then order i	31	-7		-4
then order pp	-8	-10		-19	36
then other bpp	7
then owe			-6	11
then owe b			-6	11
then own	26	-17
then own b	27	-19
then pack		17
then pack b	-20	29
then pack pp	22
then paint	31			-11
then paint pp	31			-11
then pass b		11
then pass s	23	-9
then patch	7
then patch pp	5
then peel		10
then peel i	-10	17
then phone	5
then phone b	5
then pick pp		13
then pick s	6
then pin	10
then pipe	19			-13
then pipe pp	19			-13
then pitch		-13
then pitch pp		-15		4
then plane	13
then plug				9
then plug pp				9
then plumb		-13		10
then plumb b	28	-18	-12	-9
then plumb pp	-19			23
then point	-11	-12	23	-21
then pop	17
then pop s	18
then pour	23
then pour pp	19
then prime pp		8		-8
then pull	7
then pull i	-8	10
then pull pp	27
then push	19			-7
then put	11
then put bpp	16
then put i	15
then quit	15
then quit bpp	14
then rack	-5		11
then rack pp	-5		11
then rake	-21	16		9
then rake pp	-22	17		12
then rate	11
then rate pp	11
then rattle	13
then rattle s	4
then read	19
then read i	15
then read s	9
then redo b	12
then redo p				15
then reglue	14
then reglue pp	13
then rehang	13	-16
then rehang pp				10
then replace	-7			26
then replace pp	-12			29
then require		13	-8	-12
then require pp		13	-8	-12
then reseat	17
then reseat pp	17
then return	18
then return b	20
then return s	14
then roll	-18	-12	5	24
then roll b	-10	-23	21
then roll s				15
then rot pp		4
then rough	6
then rough pp	6
then rub				7
then rub s	-7			15
then run bp	9
then run p	10	-5
then rust	13
then rust b	13
then sag	13
then sag s	12
then sand		-13	10
then sand pp		-14	12
then say i	12
then scratch	19	-20				8
then scratch b	29	-23
then screw				9
then screw pp				9
then scribe	11
then scribe pp	18
then seal				9
then seal b				13
then see b	18
then see pp	13
then seize	15
then seize pp	15
then send b						10
then send pp			8
then shave	17
then shave b	17
then shim	16
then shim pp	16
then short	-16		-11		20
then short pp	-16		-11		20
then should	-6	23		-12
then should will	-6	23		-12
then show			6
then show b	21
then show i	21
then show pp	-28		18			27
then show s	9
then shut	-7		6
then shut bpp	-7		6
then sister pp	11
then sit b	6
then size b		5
then slam	10
then slam s	10
then smell	11			-15
then smell b			16	-16
then snap	12
then snap pp	13
then snug	13
then snug pp	13
then sort	24
then sort pp	24
then sound	38			-6
then sound b	39			-13
then split	27
then split bpp	26
then spray	15
then spray pp	13
then square b	-19	10			6
then squeak	13
then squeak s	9
then stain		6
then stain pp		6
then stand	-6			17
then stand pp	17			-8
then start	18
then start b	5
then stay			6
then stay b	7		15	-19
then stay s	-13			24
then stick pp			13
then stop		-7
then stop b	12	-14
then stop pp	-6			11
then stop s	7
then strip b		13
then strip pp				9
then swap b	8
then swap pp				16
then swear		-11		9
then swear b	11	-6
then sweat		12
then swell	8
then swing	-7			7
then swing b		12
then swing s	-5			15
then tack	-12	17
then tag	11
then tag pp	11
then take b		-14	15	-10
then take p			-12			14
then take s	-27	9	24	-10
then talk				9
then talk b	22
then tap		12	-5
then tap pp		12	-5
then tell b		7
then tell pp	-4			17
then test	8
then test b	26
then text	10
then text b	10
then that'll	-11			5	8
then that'll will	-11			5	8
then they've	-12	8	11
then they've has	-12	8	11
then think b	-13	7
then think i	4
then think pp	21	-13
then thread	-11	8	6
then throw	29
then throw b	20
then throw p	15
then tie	18
then tie pp	9
then tighten	6
then tighten b				8
then tighten pp	23
then tin	-19			6
then tin b	-19			6
then touch			6
then touch b			12	-5
then trim			-6	9
then trim pp			-9	11
then trip	19
then trip pp	7
then trip s	17
then turn b	24			-9
then turn pp			5
then unopen	-24	-8	31	-10
then unopen pp	-24	-8	31	-10
then use				9
then use b		-8		14
then use pp				5
then wait	34	-18
then wait b	35	-31
then wait i	11
then wait s	-4	15
then walk		7
then walk b	26
then walk pp	-9	18		-8
then walk s	-6			8
then want pp		8	4	-22
then warp						18
then warp pp						18
then wash	8
then wash pp	7
then wasn't	14
then wasn't is	14
then we'll	22		-10	-5
then we'll will	22		-10	-5
then weep	12
then weep i	13
then weigh	9
then wipe	17			-6
then wipe pp	17			-6
then wire				18
then wire pp				18
then wobble b				14
then wont	12
then wont will	12
then work	12
then work bp	9
then would		13
then would will		13
then wouldn't		-19	22	-9
then wouldn't will		-19	22	-9
unit bag	-42		13	18
unit bottle	11			-28
unit box	-39
unit bucket				-9
unit bundle	-19		8	-7	16
unit can	-44			29
unit carton	-8	-23	39	-36
unit cartridge	-21	29
unit case	-21		25
unit coat	63	-43	-4	-6
unit each	-45	17
unit from said	-45
unit from shared	-53	20	13	-15	14
unit gal	-24	11
unit kg	-15	-14	13	16
unit kit	-35	-9	11	8	7
unit lb		11
unit length	-34		8		10
unit m	-9
unit pack	-6	16		-21	13
unit pail	-26			21
unit pair	-7	19	-22
unit pallet	-12	-5	22	-24
unit pt	-11
unit qt	-67		37	-5
unit roll	-48		19	12
unit row	23	-22	-15
unit set	-21	11	-17	14
unit sheet	-10			21
unit sleeve	-10	14
unit sq ft		4
unit sq m		-5
unit square	-30			29
unit stick	-59	34
unit tin	-35			18
unit ton	-10	-9	-7	20
unit tub	-40	5
unit tube	-62	13		9
unit yd	-38	42		-21
use buy before	-27	9	-12		22
use buy imperative behind		23
use buy modal behind	-5	19
use buy owed before	-22	28		-8
use buy past before	-17	-22	-14	5	27
use buy past behind	-21	-42		-18	59
use buy present behind	-11			-18	24
use have owed behind	18
use have past behind	27		-16
use measure modal before	-6					20
use measure modal behind	-30	43		-7
use measure owed before	7
use measure owed behind	11
use measure past before			10
use move modal before	24
use move modal behind	26
use move owed before			21
use move owed behind				-10	17
use move past before			13
use move present before	9
use need before		6
use need behind		13
use need modal before	21
use need owed before	14
use need owed behind		7
use need past before	-22	39
use need past behind	24	-6
use need present behind		22
use null imperative behind	11
use null modal before	11
use null modal behind		10
use null owed before					10
use null present behind	15	-27	6	-14
use other imperative behind		39
use other owed before	-14	19
use other owed behind		6
use other present before	10
use return before	15
use return behind	-34	-24		8		29
use return past behind	-41	-21	-25	11		34
use say modal before	21
use say modal behind	8
use say past before	26
use say past behind	21
use see before	8
use see modal behind				5
use see owed before	21
use see owed behind	7
use see past before	13
use see present before	5
use see present behind	5
use use before				30
use use behind				17
use use imperative behind	-17			26
use use modal behind		19		-24
use use past before	-19			44
use use past behind				15
use use present behind		-5		21
use work imperative before	12
use work owed before	9
verb add behind				9
verb add imperative	17			-25
verb add past	-35	-17	-10	43
verb adjust before	18
verb adjust behind	21
verb adjust past	19
verb arrive before			15
verb arrive behind		9	-14
verb ask imperative	18
verb ask past	9
verb ask present		8
verb back before	12
verb back past	-11	19		-10
verb balance behind	-28		17	4
verb be past	35
verb bed past				8
verb bend before	24
verb bend behind	18
verb bend imperative	19
verb bend past	24
verb bind before	7
verb bind present	8
verb blow before	13
verb blow past	6
verb blow present	-13	20
verb bolt behind	-11	-20		23
verb bolt past	-5	-14		18
verb bore behind	-14	-5		23
verb bore imperative	-17	-8		25
verb borrow past		14		-5
verb bow before	30	-16	-10	-10
verb box before	-26	7	-21	26
verb box behind	21
verb box imperative	16
verb box present	-7	-13	-10	25
verb break behind	-6	8
verb break past	4
verb bring before	-6	-5	18
verb bring behind		19
verb bring imperative		22
verb bring modal	-4	20
verb bring owed	30	-18
verb bring past	-28	-40	7	-27		43
verb bring present	-14	27
verb bubble past	17
verb build before	5
verb build behind		-5		5
verb build past				5
verb burn before	25			-8
verb burn behind				26
verb burn owed	5
verb burn past				19
verb buy before	-19	14	-19	-5	14
verb buy behind					4
verb buy imperative		34
verb buy owed		14
verb buy past	-6	-27	-4	-11	24	6
verb buy present		-20		-11	22
verb buzz before	4
verb call past	-7	15
verb call present	26
verb can before	11		-13
verb can behind		-10
verb can modal	10	-4
verb cap behind	22
verb cap past	20
verb catch before	12
verb catch behind	6
verb catch modal	6
verb catch present	9
verb caulk past		5
verb change before	-9			24
verb change behind	-12			14
verb change imperative		8		-16
verb change owed	-14	25		-17
verb change past	-25			33
verb change present		-10		22
verb check before	7
verb check imperative	14
verb check present	9
verb chip behind	19
verb chip past	27			-11
verb clean before	11
verb clean behind	18
verb clean past	15
verb clean present	20
verb clear behind				14
verb clear present	10
verb clip behind	28			-16
verb clip past		-10		9
verb close before	7
verb close past				10
verb close present	29
verb come behind				-5	27
verb come imperative	-11				19
verb come modal	-13	24		-4
verb come owed	25
verb come past	10	-20		-8	9
verb come present					19
verb consum past	-12	-14	-18	26
verb could behind	21	-6
verb could modal	21	-6
verb count behind			13	-13
verb count past	-9	-24	25	-18
verb count present	8		-14
verb cover before	28			-7
verb cover behind	19
verb cover past	16
verb cover present	30	-9		-9
verb crack behind	17
verb cup before	9
verb cut before	-4	12
verb cut imperative				5
verb cut modal		19
verb cut owed	19
verb cut present	17
verb deliver before			11	-13
verb deliver past			17	-16
verb dial past	14
verb didn't modal	-16	21
verb dig behind	15
verb dig past	5
verb ding behind	12
verb ding past	18
verb do before				-4
verb do imperative			13
verb do owed	7
verb do past		-5		5
verb doesn't behind	19
verb doesn't modal	16
verb don't before	17
verb don't behind		5	-12
verb don't modal			-7
verb dont before	12
verb dont modal	12
verb drain before	4
verb drain modal	6
verb draw behind		4
verb drill before	15
verb drill behind	11
verb drill modal	14
verb drill owed	11
verb drill past	10
verb drip before	12
verb drip behind	8
verb drip past	17
verb drip present	6
verb drive behind	-7			13
verb drive past				11
verb drop behind	5
verb drop past	6
verb dry before	-13		16
verb dry modal	24
verb dry owed		12
verb dump before		5
verb ease behind	30
verb ease past	24
verb eat behind				13
verb eat past	24			-9
verb eat present	-14			20
verb end past				6
verb fail past	14
verb falta behind		15	-9	-18
verb falta owed		15	-9	-18
verb feel behind	23
verb feel modal	23
verb figure behind		7
verb figure imperative	-23	36
verb figure present	18		-11	-11
verb file behind	13
verb fill before	23
verb fill behind				6
verb fill present				7
verb find imperative	-10	19
verb find past	18
verb finish before				10
verb finish behind				10
verb finish imperative		-10	-21	19
verb finish modal		-14		10
verb finish past	9
verb finish present				12
verb fit before				21
verb fit behind	-9			23
verb fit past	-32	-7		47
verb fit present	25
verb fix before				20
verb fix behind		-4		8
verb fix past	-13	-8	-4	29
verb fix present	10
verb flip behind			17
verb float behind		-22	-10	18
verb flush before	7
verb flush behind	10	6		-19
verb flush imperative	21	-11
verb flush past	25			-10
verb foam behind		-4		15
verb foam past		-6		15
verb forget behind		9
verb forget present	4
verb frame before	14
verb frame behind	17
verb frame past	23
verb fray before	10
verb fray past	10
verb fre behind		-9	19	-19
verb fre past		-7	17	-17
verb freeze before	6
verb freeze past	6
verb get before		6
verb get imperative		58
verb get modal	21	-12
verb get owed	-9	19
verb get past			6
verb give before	27
verb give past					11
verb give present	-20					17
verb glue before				6
verb glue behind				5
verb glue imperative	15
verb glue owed	20
verb glue past				27
verb glue present	11
verb go imperative		16
verb go modal	29
verb go owed					11
verb go past				38
verb go present	4
verb gonna before		10
verb gonna behind	-29		28	-16
verb gonna owed	-21		26	-14
verb gotta behind	6
verb gotta owed	10
verb grab behind		5
verb grab modal	-16	35
verb grab past	-23	-24	-11	-13	32
verb grind behind	13
verb grout before	18
verb grout present	9
verb guess behind	-6	16
verb guess present	-17	23		-7
verb hang before				30
verb hang behind				5
verb hang imperative	-12		21	-24
verb hang modal	17
verb hang owed	22
verb hang past	-15			54
verb hang present	7
verb has behind	20
verb has owed	15
verb haul past	-14	19		-6
verb have owed			9
verb have past	27		-16
verb head behind		8
verb head present				9
verb hit imperative	17
verb hit past				12
verb hold before	11
verb hold past	16
verb hold present	8
verb hook behind				16
verb hook modal	6
verb hook past	-5			19
verb i'll behind		10		-8
verb i'll modal		10		-8
verb install past	-13	-17	-12	28
verb keep imperative			7
verb keep past			9
verb keep present	15
verb kill behind	14
verb kill owed	13
verb kill past	7
verb knock behind	21
verb knock past	21
verb know behind				9
verb land before				-12
verb land behind	12
verb land owed	12
verb land past	14			-5
verb land present	-5				16
verb latch before	15
verb latch modal	12
verb lay before	-4	8
verb lay behind	-12			8
verb lay modal		9
verb lay past	-15			31
verb lay present			13	-17
verb leak before	18
verb leave before			33
verb leave imperative	20
verb leave modal	17
verb leave past			25
verb let behind	12
verb let imperative	22
verb level behind	-7			16
verb lift behind	18
verb lift past	14
verb like behind	-6	25
verb like modal	-19	33
verb like present	10
verb listen behind	7
verb look behind	5
verb look present	7
verb lose before	11
verb lose behind	5
verb lose modal	7
verb lose past	9
verb make before	29
verb make past	15
verb mark behind	15
verb mark past	17
verb match modal	18
verb measure before	13
verb measure past	7
verb measure present	4
verb mention past	18
verb miss before	15
verb miss behind	-12	26
verb miss imperative	18
verb miss present		18
verb mix behind				12
verb mix past				14
verb mount before		-7		19
verb mount past	-38	-9	-24	45
verb move before	23
verb move imperative	9
verb move modal		7
verb move owed	12
verb move past	32
verb move present		-16	17
verb mud before	15
verb must behind	12
verb must owed	11
verb nail before	15
verb nail behind		-12		9
verb nail past				5
verb need before		18
verb need behind		14
verb need owed		13
verb need past	-18	39	-10	-10
verb nick behind	10
verb nick past	12
verb notch behind	12
verb null imperative	11
verb null present	15	-27	6	-14
verb open before			15	-12
verb open behind	27
verb open past		-17	11
verb open present	28
verb order before	-11	5		-15	20
verb order behind					6
verb order imperative		7
verb order modal		5
verb order past	-6	-31		-17	54
verb order present	-13	11		-12	8
verb owe behind					9
verb owe present					10
verb pack imperative	-11	19		-8
verb pack past				9
verb paint imperative	16
verb paint modal			13
verb paint owed	17
verb paint present	11
verb pass before	22
verb pass past	20
verb pass present				9
verb patch before	-17			21
verb patch imperative		13
verb patch owed	16
verb patch past	25
verb peel behind	15
verb peel past	15
verb peg past	11
verb pick behind	-8				24
verb pick imperative		22
verb pick past	-17	-18		-8	55
verb pick present		14			-5
verb pipe past	21			-15
verb pitch past	17
verb place behind	-22	-7		29
verb place imperative	-23	-9		30
verb plane behind	12
verb plane imperative	16
verb plane past	5
verb plow past	31			-25
verb plug before	22
verb plug imperative	20
verb point behind	14
verb pop behind	7			-9
verb pour behind		-4
verb pour owed	11
verb pour past				13
verb prime behind	4
verb prime imperative	25
verb prime present	21
verb pull before	7
verb pull behind	7
verb pull imperative	12
verb pull owed	12
verb pull past	7
verb push behind	18
verb push modal	9
verb put before	18
verb put modal	-17	27
verb put owed		8		-16	6
verb put past				14
verb put present	-5	23		-17
verb raise behind	15
verb raise imperative	15
verb rate behind	25	-7		-5
verb rate past		11		-8
verb rattle before	8
verb reach modal	9
verb receive past	-44	-20	31	-29	31
verb redo behind			6	-10
verb redo imperative	20
verb rehang behind				10
verb rehang past				10
verb relay behind		-9	-4	11
verb relay past		-10	-9	11
verb remind behind		-8	8
verb remind imperative		-8	8
verb replace before		-9	-6	11
verb replace behind				9
verb replace past		-13		17
verb reset behind		-5		5
verb reset imperative		-9		14
verb reset past	20			-8
verb return before	9
verb return behind	-25	-17	6	-13		30
verb return past	-28	-10	-18	-15		34
verb return present	-22		32
verb rip owed			15
verb rock past	13
verb rod behind	-10	21		-17
verb rod past	29			-16
verb roll behind	20
verb roll past	15
verb rough before	6
verb rough past	10
verb rub behind	10
verb run before	13
verb run imperative		11
verb run modal	13
verb sand behind	28
verb sand imperative	11
verb sand modal	13
verb sand owed	12
verb sand past	7			-5
verb sand present	14
verb save behind			12	-4
verb save past			16
verb say imperative	23
verb say modal	34	-8
verb say past	11		8	-14
verb scrape behind	24
verb scrape past	16
verb scratch past				-5		17
verb screw behind				5
verb screw owed	11
verb screw past				6
verb scribe before	23
verb scribe behind	15
verb scribe modal	23	-6
verb scribe owed	19
verb scribe past	12
verb seal before		-11	18	-15
verb seal behind	7
verb seat before	12
verb seat modal	12
verb see before		10	-6	-5
verb see modal				5
verb see owed	19
verb seize before	17			-4
verb seize past	17			-4
verb send before	-9	10	5
verb send behind	-9					22
verb send imperative	-26	33	-9	-11
verb send modal	-7	15
verb send owed	11
verb send past	-9			-6		29
verb send present		-9		11
verb set behind				5
verb set imperative	6
verb set modal	24
verb set past				10
verb shim before	18
verb shim behind	27
verb shim imperative	6
verb shim owed	15
verb shim past	28			-9
verb ship behind	-4		13
verb ship past			8
verb short past		8		-5
verb should behind	-6	-9		18
verb should modal	-6	-9		18
verb show before	-6	-4	14
verb show behind	15
verb show past	-18		18			8
verb show present	28
verb sign past				5
verb silicone before	21
verb silicone owed	6
verb sister behind				5
verb sister imperative		5		-6
verb sister past				21
verb sit before						14
verb sit modal	-20	11				19
verb sit owed		-7
verb sit past	15
verb sit present	15
verb size behind	21	-13
verb slam present	12
verb slid behind	6
verb slid present	6
verb slide behind	5
verb snake behind	11
verb snake past	14
verb snap before		10
verb snap behind	7
verb snap past		7
verb snug behind	22			-10
verb snug past	24			-10
verb sort past	13
verb spend behind	-15	-12	-14	28
verb splice before				13
verb splice behind	9
verb splice owed	6
verb splice past				5
verb split behind				4
verb split past	-24			28
verb spray before	22			-7
verb spray behind	5
verb spray past	24
verb squeak before	9
verb stack behind	-9	-6		18
verb stack past	-16			22
verb stagger behind	-9			15
verb stagger past	-6			13
verb stain before	-27	21		10
verb stain behind				-12
verb stain past		9
verb stand behind		5
verb stand past	17
verb start before	25
verb start present	11
verb stay before	7
verb stay behind		-17	16
verb stay imperative		-22	20	-11
verb stick imperative	39	-16		-21
verb stick past	-6			21
verb stop before	-24	-12	21
verb stop behind	31
verb stop past	20
verb stop present	-16	-8	19
verb straighten behind	19
verb strap behind	-18			13
verb strap imperative	-7		9	-10
verb strike before	15	-5
verb strike modal	15	-5
verb strip before	14
verb strip behind	6
verb strip past	15
verb stuff behind	-26			19
verb stuff imperative	-10	8
verb stuff past	-7	-8		24
verb supposed before	-13	-14			24
verb supposed behind	18
verb supposed owed		-12			21
verb swap before	-16			29
verb swap behind				11
verb swap imperative		13		-25
verb swap modal	15		-14	-17
verb swap past	-19			48
verb swear behind	17
verb swing behind		6
verb swing present	15
verb tack behind	11
verb take before						12
verb take behind						24
verb take imperative		-27	25
verb take modal	-9	29		-16
verb take past		-6				45
verb take present		-19
verb tap before	7
verb tape modal	9
verb tear before	11
verb tear past	9
verb tell before	19
verb tell owed	5
verb tell past	20
verb tell present	13
verb test before	22
verb test behind	8
verb test past	23
verb text imperative	7
verb think before	8
verb think past	10
verb throw imperative	-4	12
verb throw past		-9		12
verb tie before	11
verb tie behind	21
verb tie past	20
verb tighten behind	7
verb tighten past	4
verb tile past				11
verb top behind	21			-6
verb top imperative	7
verb top present	16
verb touch before	5
verb touch behind	8
verb touch imperative	12
verb touch modal	8
verb trim before				7
verb trim behind				14
verb trim imperative	10
verb trim past	-15	-5		26
verb trip before	11
verb trip behind	6
verb trip past	16
verb try behind			6
verb try imperative	-16		18
verb try past	31
verb turn before	28
verb turn behind	27
verb turn imperative	18
verb turn modal	12
verb turn past	31
verb use before				30
verb use behind				17
verb use imperative	-17			26
verb use modal		16		-22
verb use past				35
verb use present		-10		11
verb wait before	17
verb wait behind	23	-4
verb wait present	21
verb walk behind		-13		-9	18
verb walk past		-23	-8	-10	19
verb want modal		15
verb want present		16
verb wash behind	18
verb weep before	19
verb weep present	16
verb will before	10
verb will behind	23
verb will modal	25
verb wipe behind	13
verb wipe past	16
verb wire before	12
verb wobble before	18
verb wobble past	21
verb work before	11
verb work behind	-8		18	-9
verb work past	17
verb work present	14
verb would modal	-11	16
verb wouldn't behind	-6	15	-4	-6
verb wouldn't modal		13	-5	-8
verb wrote behind	15
verb wrote present	15
volume after have far	-30	24	8	-23
volume after have sentence	-8	21
volume after need far		-23	28	-11
volume after need here	31	-12	-8
volume after need sentence	-35	35		-5
volume after none far	-41		19	8
volume after none here	-22			27
volume after none sentence	-37			13
volume after used far	-6		11
volume after used here		-19
volume before it ate	-5	-6	-11	30
volume before it bought	-29	15		-16	5
volume before it came	-27	-24	37	-27
volume before it have	-21		45	-31
volume before it need		31
volume before it used	-24	-8		28
volume behind it need	4			-12
volume behind it used	-10	-14	9	8
volume beside bring	-19	11
volume beside buy		22	-8
volume beside buy b other	-20	32	-15
volume beside figure		9	-15	-11
volume beside get	-22	11	5
volume beside go	-19			27
volume beside have		-10	4
volume beside have b person	11
volume beside leave	-43		34	-29
volume beside measure s other		13	-15	-14
volume beside move pp other	-27	21		-16
volume beside need		25
volume beside need b nobody	4
volume beside need b other	-11	28
volume beside need b person	-13	44
volume beside nothing	-35	5	45	-22
volume beside other b nobody	7	-14	9	-12
volume beside other b other	-19	33	-34	-31	10
volume beside other b person	-44	-29		39
volume beside other p other	9	-23	-28	9
volume beside other p person	-13	-11	33	-10
volume beside pour	-28	-5	-5	33
volume beside take	4	-22		11		-5
volume beside use	-9			43
volume beside use pp nobody	-6			29
volume beside use pp person				20
volume beside work b other		9		-24
volume beside work pp nobody		-24	14	-8
volume beside work pp other		-27	-27	24
volume buy imperative behind	-8	27
volume cue ate	-12	-18	-29	39
volume cue came		-12	24	-21
volume cue have	-23		57	-5
volume cue lacks	7	-16
volume cue need		20
volume cue used	-30			27
volume flawed	-16	5
volume have present behind	-14		33
volume kept	-12		21	-17
volume left ,		-15	15
volume left .	-34			18
volume left :	-38		27	-15
volume left about	12	-21	9	-16
volume left and	-34	15		-4	16
volume left buy	-20	26
volume left figure		9	-15	-11
volume left get	-13		10
volume left have	-29	-15	37	-9
volume left maybe	-5	-9	24
volume left me	-12	34	-9
volume left need	-13	56
volume left pour	-28	-5	-5	33
volume left take		-11				-9
volume left through	-8			22
volume left use				22
volume more	-18	26		-8
volume move past before	-21	-14	16	10
volume move past behind	-27	-19	12	11
volume name flawed		-17	20
volume named before finish		5
volume named before material	-17		15	13
volume named before part	32	-17	-17	-25
volume named before surface	9	15	-9	-22
volume named before word	5
volume named here finish	-36		8	18
volume named here material	-48	12
volume named here word	-24	21	21	-27
volume need modal behind	-16	24
volume need owed behind		5
volume null copula behind	-29	10	18	-5
volume other copula behind		-17	16
volume other imperative behind	-12	24
volume other past behind		-21	9
volume other present behind	-32			13
volume pointing	6	32	-22	-17
volume right #		15	-5
volume right ,		-9
volume right .	-25		9	8
volume right Q	-30	15	10	-20
volume right and	-42	42
volume right go	-27	-21	-23	34
volume right i	-18	15	-34	20
volume right in		-24	-10	19
volume right leave	5
volume right of	-31	41	-12	-12
volume right on	-35	6	34	-13
volume right so	-29	-22	37	-26
volume right the	-17	30	-26	-6
volume say imperative behind	-35	22		10
volume says copula behind	-22		25
volume says imperative behind	-25	33	-6
volume says modal behind	-42	22	-30		16
volume says owed behind		14
volume says past before	-55		20	17
volume says past behind		-10		5
volume says present behind	-7		7
volume sized	-33	10	24	-26
volume sold so false	-15			7
volume sold so true	-24		19
volume then have b	-25	9	12	-13
volume then move p	-27	-21	-23	34
volume then other b			13	-6
volume then other p	4	-9	-18		9
volume then undefined is	8	14	-32	-10
volume then undefined will	-6			8
volume then work pp	-40		9		15
volume use past behind				24
volume verb be behind		-17	16
volume verb bring behind			11
volume verb buy behind	-24	33
volume verb figure behind		9	-15	-11
volume verb get behind	-24		12
volume verb go behind	-11			17
volume verb have behind	-14		33
volume verb leave before			45	-5
volume verb need behind		8
volume verb null behind	-29	10	18	-5
volume verb take behind	8	-12				-12
volume verb use behind				29
volume whole clause	-19			4
volume work past behind	-7		-17	14
weight after have far	-25	32	-9	-17
weight after need sentence	7			-19
weight after none sentence			-8
weight after used sentence	-17	-17		26
weight before it need		9		-5
weight before it used				9
weight behind it used	6	-13
weight beside hold	13
weight beside measure i other	14
weight beside nothing				5
weight beside work pp other	26	-14		-6
weight cue have	-24	-31	28	6
weight cue need	-30	31
weight cue used	-8			23
weight left ,	-7	-17		22
weight left at	16
weight left hold	13
weight name flawed	-10			7
weight named before material	-5			17
weight named before part	26	-9		-8
weight named before word	-15	15	-4	5
weight named here material	-33	28		6
weight named here word	-10		19	-7
weight null copula behind	22
weight null none no			-6
weight right ,		11	-8	-33
weight right .	-13	15
weight right and		-6		4
weight says copula behind	35			-13
weight says imperative behind	-34	40		-11
weight says none no			-6
weight says past before	-15	-17		29
weight says past behind	-9	-23		25
weight says present behind	-11	-19	24	-22
weight sized	-32	28	-5	8
weight sold so false				6
weight then work pp	-15	-7		27
weight verb get behind	-16	17	6	-14
weight verb null behind	22
weight verb null no			-6
weight whole clause		9		-22
weight work past behind	11	-5
who nobody owed		12
who nobody present		-4	43
who thing owed	8
whole false		-39	34
whole true	-6
`;
