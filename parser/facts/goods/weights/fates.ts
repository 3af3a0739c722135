/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after #	6
after '	30			-4
after (	-9			-20
after +	-11
after /	-29	5		7
after 1	-15		22
after =	35
after >	28			-14
after @	-11
after about	8
after above	26
after acclimate			13	-4
after across	19
after actually	16	-7	-16
after add	-15	-5		27
after adjust	18
after aff	-12			20
after afternoon	8
after again	9
after against	27
after air	36			-14
after allen	25			-7
after alone	6
after already			6
after altogether	15
after am	-17			23
after american	-26	38
after an	5
after anchor	19
after another	-6
after anybody	16	-6
after anybody's		17	-10	-17
after anyhow	19
after apart	15
after approve	17
after apron	15
after area		14		-7
after aren't	12		-4
after arvo				12
after asbestos	21	-18
after b	32			-8
after back bedroom	15
after back room	14
after backorder	-38	31			18
after backsplash	-6			15
after backwards	18
after bag	-27
after bakery	9
after balance	-8	-14	19
after balcony	-15		23	-5
after band	28	-8	-8	-16
after bang		-7		15
after banging	-6			14
after bank		-11		14
after bar				5
after bare	26
after basement			4
after bathroom				11
after bead	5
after beat	10	9	-18	-23
after bed	19
after bedroom 2	20
after bedroom 4	16
after bedrooms	19
after being	13
after believe	4
after belly	22
after belongs	6
after bench	-4			7
after bend	9
after beside	38			-16
after better	-12	20
after between	26
after big	8
after bin	-20		30	-20
after bite	14
after bled	-16		-22		26
after bleed	11
after blow	12
after blue	-18	14	17
after blunt	-16	19		-8
after board	24	-15
after boards	4
after boil	21
after bolt				5
after bond	11
after bone		4
after borrow		10	-8
after boss	20			-7
after bought far copula	15
after bought far modal	17
after bought far past	-4					23
after bought here				-5	25
after bought here and					11
after bought here comma	-12	-21	-23	-22	31	-6
after bought here none	-16	-27	-20	-17	34
after bought here past	18
after bought here present	-15	-6			21
after bought here run-on	30				-5
after bought here start	-8			-8	22
after bought sentence					34
after bought sentence and					18
after bought sentence comma	-7	-41		-41	59
after bought sentence copula	16
after bought sentence modal	-11	-9			22
after bought sentence none		-48		-50	62
after bought sentence owed	-13	11		6
after bought sentence past	-8			17
after bought sentence run-on	13
after bought sentence word		15	-14
after bow	32	-7
after bowl		13		-8
after bowls	10
after box	-23		20
after boy	10
after breathing	9
after bridge	14
after bring		5
after broke off	11
after brown		17
after brush	-9	4	14	-20
after buff	-7			14
after bug	22
after bury	19
after butt	-19	15		9
after butt joint	7
after butter	-9	11
after button				14
after buy	-31	35
after buzz	41	-13		-6
after came off			18	-4
after can't	-6	10
after carbon	10
after carry	-22	16	14
after cart	6			-6
after carton	-25	14	16
after case	-14		16
after cast	23	-5		-6
after catch	34
after caulk	30			-10
after cedar	7
after cellar			15
after centers	23			-14
after centre	16
after centres	23
after chair				14
after change	-15	-4		34
after channel	27
after charge			13
after chatter	26		-11
after cheap		7
after check	30
after chip						13
after chirps			13
after chrome	-20					25
after chunk	7
after church	14
after circuit		-20	-19	13
after clamp	-13	27
after click			10
after clinic	12
after clip				11
after clocking	21	-9
after clog	15
after closet	23
after co	-13	-4		20
after cock	-20	24
after code	-10			4
after code's	19
after cold	25
after color	19
after color match			-13
after column	23		-8
after coming off	13
after common		12
after compact	30			-24
after complete		5
after conversion	-6			15
after cope	-22	24
after copier	19
after corners	16
after cornflakes	6
after corridor				6
after corrosion	23
after couch	22			-6
after council	4
after counter		-33				10
after course	18
after cover		11
after crawl	12
after credit	4
after crew	19
after crook	35
after cross threaded	25
after crosses		8
after crown	26
after crumbl	11
after crumbling	-18	22
after crush	14
after ctr	30	-14		-15
after cup	26
after cure	29
after curl	17
after customer	-6			16
after cut out	11
after cut short	21			-5
after cut wrong	-5	-8	-6		13
after cutout	14
after damp	11
after dangerous	27			-24
after date	15
after day	20
after daylight	23	-9
after days	21
after dead	10
after deal	6
after deck	28
after degrease	14
after delaminate		14
after deli	-12			19
after deliver	-17		12	-13
after delivery	-22	29
after den			-6		13
after dent	7			-16
after didn't		-8		9
after die	-15	23
after different	28
after dig		5
after dime		7
after dining	12
after dining room	10
after dinner		11
after dips	-5			14
after dog	17
after dont		11
after doorway	20
after double	37			-9
after downstairs	19
after drag	29			-10
after drags	10
after drags on	-10	16
after dresser	16
after drill	5
after driver	-15	-5	-4	-19		25
after driveway	17
after drum	16
after drywall	33			-10
after duck	20
after duct	18
after due	28
after dull	16
after dump		4
after dumpster	15
after dust	-10					19
after e	-5	-6		14
after each				8
after ear	21
after early		21
after east	15			-4
after east side		-15	-12	19
after eat	11
after eave		-7	-19	12
after edges	10
after eggshell	-17	-8		-7		25
after eighths	10
after either	25
after electrician	19
after else				-12
after em	6
after ends	25			-15
after engineer	12
after enough	15	-9
after ensuite	10
after enter	9
after entry	23
after epoxy	5	-11
after even	15
after ever	22
after every	16
after everybody	19
after everything	14
after everywhere	22
after exam					14
after exhaust	20			-7
after extension	30	-9		-22
after extra	-29		9
after eye	24			-17
after face		-5
after factory	-9	24
after fall	32			-15
after falling	13
after falls	14
after family	10
after family room	-16
after far	-11			28
after far end	10
after fasten	11
after fcis	-27			31
after feed	6
after feel	10
after feet		11
after fell	-20	15		7
after fell out	6
after fence	-7		19
after fifth	5
after figure	14
after file	8
after finally	29
after finger	21
after finish	10
after fireplace				18
after first coat	-13		-6	30
after fist	5
after fit				15
after fix				19
after flap	11
after flaps		-6		16
after flash	12
after flat	12
after flicker	4
after flip	17
after float	7
after flood test	8
after floor	21
after floor's			14
after floors	21
after flower	13
after flush	26
after foil	-16	-16	7	15
after footing			9
after forklift	23
after form	13
after foundation		15	-12	-14
after fourth	36		-6	-8
after foyer	28			-22
after frame		14
after fray	22
after freeze	12
after front edge				5
after front room	20
after fronts	26			-15
after frost	-12	-8	-8	7	16
after frost's	7
after fully	11
after gable	10
after garage			10	-10
after garbage	27	-6		-9
after garden	12
after gas	-6			11
after gears	-8	17
after gee	-10			21
after give				21
after glaze	17
after glue				16
after goat	8
after god		8
after gold				12
after good			10
after gotta	10
after gouge				-5		19
after grab	16	-13		6
after grade	7
after grain	16
after gray		-4		9
after green	9
after grinder	17
after groove			7
after guest room	12
after guide	21
after gurgles			-8	-10	17
after haha	25			-23
after haint	5
after hair	19
after hairline	17
after half	-5		13
after half's	15
after halfway	8
after hall bath	8
after hall closet	27			-10
after hallway	32
after hammer	13
after hammering	-11			16
after hand			21
after hang				6
after hank	15
after happen		10		-4
after hard	32
after harden	28	-24
after hasn't		14	-9
after have far and	7
after have far comma				-13
after have far owed		15
after have far run-on	6
after have far word	18
after have here and	16
after have here comma	25
after have here imperative	17
after have here modal	18
after have here none			32
after have here past	21
after have here present	11
after have here run-on	23
after have here start	-33		37	-23
after have here stop			6
after have here word			5
after have sentence comma			26	-10
after have sentence imperative		26
after have sentence modal		16
after have sentence none	-11		27	-18
after have sentence owed	6
after have sentence past	7
after have sentence word	-5	42
after haven't	-25	22
after he's	6
after hearth	12
after heat	7
after heat gun	20
after heater	-28	31		-5
after height	24
after here			22
after hers	-6			15
after hickory	4
after hide	7
after higher	10
after him	-6					18
after his		6
after hit	9
after hockey	12
after hole	10
after holes	13
after holiday	21
after hollow	29
after home	-21	5	20
after hot				19
after hub		-9		13
after humidity		13
after hung up	18
after i'd	30	-12
after i've		-9	10
after inch	-26	21	-11	10
after inside corner	31	-28
after inspection	14
after inspector	-23	24	7
after inspector's	10
after install	-5			23
after instead						7
after into				20
after island	-21	11		12
after isn't	6
after its	21
after job	-16		4
after joint	-10		17
after joist bay	9
after kennels	-7				19
after kick		13
after kicks out				8
after kid		-8	10
after kill	6
after kind	-14	24
after kinda	17	-12
after kink	-8			18
after kisse	23
after kit	-15	4	-10	22
after knee	15
after knee wall	5
after knots	-17	5	8
after know	20
after l	8
after lab	-6	16	-14
after label			17	-7
after lacquer	-8	18		-24
after ladder	28	-20
after lads	23
after lady	29	-16			-20
after lag	19
after landlord	8
after lane				10
after laser	12
after last	7
after later	12		5	-20
after latex	21		-13
after laugh	14	5		-16
after laundry	24			-13
after law	13
after lay				7
after layers	7
after lead	4
after lean	-5	10
after leaning	-10		29	-22
after leans	10
after least	31	-6	-6	-15
after left end	9
after left hand	12
after left wall	7
after legs				11
after length	15
after lengths	-22	-18	22	6
after less	19	-13
after let go	17
after level	8
after lid		24
after life	-8	16
after lift	13
after like	20
after lime	19	-5
after line	15
after linen closet		6
after lint	11
after lip		5
after list		21	-6	-19
after lit	9
after lite		-12	13	-11
after little			10
after live	21
after lock	-10			15
after loft	-19		16
after lol	23
after long wall	14
after longer	22
after look	6
after lord	-6	-14		19
after lose	8
after lot	6			-9
after lounge	24
after lovely	14
after luck	14
after lunch	20
after machine	12
after main	22
after man		5		-5
after manny		11
after maple	16	-11
after mark	29
after mask	33		-21
after master	28			-12
after master bath	28
after mat	20
after mate		20	-8	-15
after math				4
after matter	18
after mattress	10
after max	13
after means	4
after meantime		21	-10
after meet	10
after metre	7
after mill	39				-8
after min	6
after mind	33		-11
after mine	-16	18
after minimum	32	-25
after minus				5
after miss		5
after miter	10
after mix	18	-6
after moisture	9
after mold	19
after morning	14
after mortar	32			-19
after mould	5
after mount	-14			38
after movers	17
after mr	8
after much	-12					21
after mud		14		-18
after mud room	-8			15
after mudroom			7
after mush				15
after mushy	6
after must	22
after my			16
after n	20
after ne	20
after near	27
after nearly	27			-13
after need		12
after need far copula	10
after need far modal	11
after need far owed	10
after need far run-on	4	-12
after need far word	20			-8
after need here and	5
after need here comma		14
after need here modal		4
after need here none	-8	45		-10
after need here past	42
after need here present		14
after need here run-on		8
after need here start	-18	30
after need sentence comma		27		-8
after need sentence imperative	31
after need sentence none		63		-6
after need sentence owed	40	-26
after need sentence word	21
after needle	20			-8
after neighbor		9
after neutral	29	-8		-6
after new				7
after news	5
after next		20
after nice	-6	8
after niche	16
after nick	15
after nickel	8
after night	9
after nite	15
after no good	10
after no water		-18		12
after nobody	35			-17
after noise	5
after none far and	17		-15
after none far owed		19
after none far present			5
after none far run-on	29
after none far word	23
after none here imperative		19
after none sentence stop		-24			4
after north	10			-11
after north side	22
after notch		6
after nothing	6
after nowhere				5
after number				4
after nursery	12
after oak	-6
after off center				10
after office	-22		14
after ok			14
after once	23
after ones	-27	27
after onto	-6			16
after oot	14
after open	10
after or		6
after order	-52	12			62
after other	-6		5
after others	-9	-10		18
after oughta	7
after our				-8
after out of level	16
after out of square	21
after outta		-15		4
after oversize	14
after painted over	21
after painted shut	15
after painter		9
after painter's	6
after pairs	23
after paper		10
after parking lot	13
after parlor	22			-8
after part	14
after part's	-15			26
after partial	-17	-13	25	-18
after parts	-19	-22		11	22
after party wall	15
after pass	8
after past	29
after patch				17
after patio	-14	18
after peak	26			-10
after peel		14
after perimeter	8
after phone	10
after pick	-18	36
after piece	16
after pieces			-16
after pile		-8
after pillar	16
after pin	24
after pine				5
after pit	16
after pizza	18
after plane				8
after plant	-20	26
after plate	6	-26		6
after play	4
after please		42		-11
after plenty	-36	30	19	-23
after plumb				16
after plus	-13	20		-4
after pocket	-10		25	-6
after point	18
after pole	24	-17
after popcorn	-14	-20	26	-16
after popped off	22
after porch	19	-10
after position	7
after pot	11
after pour	14
after powder				5
after powder room	-19	9	10
after pressure	7
after pretty	-20			30
after prime		14
after probe	6
after profile	33	-29
after promise		9
after prop	-11			16
after properly	13
after proud of	8
after pt	-20			23
after puck	12
after pull	12
after punky	16
after push	34			-5
after putty	-25		15	13
after quick	-9			22
after quiet	-38			45
after quit		15
after quote	17
after r	22			-12
after rack	9
after rains	-4	17	-11
after raise				7
after rake	-16	13
after rate	12
after rattle	13
after raw	6
after re	23
after reach	-8	-13			18
after ready			6
after real		-7	19
after really	17
after rear	25
after rebuild	13
after reception	12
after red	-12		11
after redo	27
after ref	5
after reglue	20	-7		-10
after rehang	12
after render				13
after rental	36			-15
after repair	24			-8
after replace	-14			29
after require		18	-5	-19
after reseat	21			-10
after reserve	18	-21
after reset			9
after rest			-31	19
after return	30
after returned far	-5		6
after returned far comma	-12	25
after returned far copula	17
after returned far none	-15	19	6
after returned far owed	-10	6	6
after returned far past	-10		13
after returned far stop			14
after returned here	7
after returned here and	11
after returned here past	15
after returned here start	18	-8
after returned sentence				-20	24	11
after returned sentence and	-40				37
after returned sentence comma	-11	-24	-16	-28	6	33
after returned sentence copula					9
after returned sentence none	-8	-31	-23	-30	-6	38
after returned sentence past		-6		-23	35
after returned sentence run-on	6			-8
after returned sentence word	15	-7
after ridge		-24
after right's	5
after ring	7
after rip			5
after rise				5
after road	28		-10
after rock	14
after rocks	11
after rod		7	-18
after roll	-17		19	5
after roof	12
after room	17
after rooms	-14	-7	13
after roots	18
after rotten	17
after rough	18
after rough opening's	-28			14		19
after round	19
after row	21
after rub	-8			17
after rubber	-11	18
after ruiz	4
after rusted through	24
after s	16	-7	-5
after sag	11
after same				6
after sand	4
after sandwich	17	-5
after sanitary	29	-7
after sap	7	5		-16
after save	11
after saw	24
after scrap	15			-10
after scrape	25
after scratch	25	-9
after screed	9
after screen	18
after screw	8
after scuff	16
after seam	7
after seams		-4		12
after seat			11
after second				20
after second coat	31
after second floor	-11			19
after section	14
after see	7
after seize	16
after set	4
after settle	-5	-14		15
after shear	21			-11
after sheath	10
after shed	-31	18
after sheet		4
after sheets		-7	14
after ship	29
after shoot	11
after shop			10
after short		20
after should				5
after shy		11
after side	11
after side's		7
after sign	6
after signal's				8
after silicone	20
after silver	-9	22
after since	5
after site	-32		42	-31
after sixteenths	5
after skim	9
after skip		-9	5
after slab		14
after slam	11
after slap		10		-22
after slide	7
after slip	10
after slope	22
after slow	6
after small	24
after smell	20
after soft	25
after somebody's	11
after somewhere	4
after sorry	6
after sort	22
after sound	15
after south	13
after space	-7			14
after spare	-54	-17	61
after spares	-55	-12	25	23
after spin	10
after spins	27
after spitting	14
after splash	5
after spoon	6
after spot	4
after spray	34
after spun	21			-17
after square	8		-17		14
after squeak	4
after squeeze	31	-12
after stair	-14		18
after stairs				-5
after stairwell	-18	-13	20	-18	13
after staple	8
after station	-26		16	15
after steam	24
after steps	-10		13
after stick	6
after sticky	29			-18
after still			4
after stinks	20
after stock			10
after store		-24	15	-23		7
after storm	12
after story	9
after strap				14
after street	27
after strike	4
after strip	11
after strong	11
after stub	-12			16
after stuck open	22
after study			13	-10
after stuff	-16	18
after sub	-23	-8	-14	28
after sunroom	7	11		-20
after supply	8
after support	-9				19
after supposed					17
after sure	-11	18
after swap	-7			34
after sweat		11
after sweep	-21	25
after swell				8
after swing						14
after swings shut	7
after table saw	21
after tacky		-13	19	-15
after tae	17
after tag	-22	29
after tail				11
after tailgate	15
after talk			-11	16
after tank	15
after tap	25
after taper	4
after tell	-14	-4		36
after template	26
after tenant	32	-18		-9
after than	8
after thanks	18	-14
after the boss	7
after the kid	-15			18
after the kids				7
after the lab	19
after the lady					9
after the yard	7	-25				13
after them's	-11			16
after there's	-5	16		-6
after they're	20
after they've	17			-18
after thin	-18	22
after thing					12
after things	15
after think	17
after third coat	15
after thirds	-13		18
after this	6
after tho	21
after those		13
after thread	6
after three				5
after through	6
after throw	16
after tie	22
after tight	25
after tighten	21
after tile guy	-10	18
after tiler's	8
after tin	-15	-21	19	7
after tip	7	-6
after toast	10
after toaster	16
after toby	5
after together	26
after too big	26
after too deep	-4	15
after too far				10
after too high	34	-16
after too long	-5	17
after too low	16
after too short	31
after too wide	19
after top edge		19		-16
after torque		-14	-11	14
after total	11	-30		17
after touch	36
after towards	11
after trace	8
after trade	-13	24
after trailer	-36	-36	33
after trash	27		-15	-12
after treat		17
after trim		5
after try	17
after tube				8
after tubes	-9	21	-15	-8
after tuck	13
after turn				-5
after twice	21
after twist	25
after two	-13		18
after twos		12
after type				14
after underneath	8
after unit	15
after units	6
after unopen	-39	-6	42	-22
after update	12
after uphill	-8			15
after upper	-19			21
after upside down	23
after upstairs	8
after urethane	-4	19	-5	-14
after use				15
after used far and	35			-7
after used far copula	15
after used far owed		20
after used far run-on	26
after used here comma		-5		36
after used here copula				11
after used here imperative				24
after used here modal	13	-26		7
after used here none	-6	-7		38
after used here owed	-5	-13	9
after used here past	21
after used here start	20
after used here stop	12
after used sentence none				16
after utility	9	-7
after vacuum	22			-6
after van	-53	-4	71
after varnish				9
after very	7
after visit	-11		18
after wait	18
after waiting room	12
after walls	14
after walnut	-7	-9	18
after warm	9
after warp						11
after wash	18
after wasn't	7
after water's	-14	16
after waterlog	13
after wavy	12
after way		4
after ways	-4			13
after we	13
after weak	-4		14
after weather		-15	-6	6
after weatherstrip		7
after wedge	27	-17
after weep	30
after weight	21
after west	17
after wet	11
after whatever	-21	21
after whenever	8
after while	-14	15
after whistling				10
after white	-26	14	4
after whoever	4
after whole	11
after width	-19			8		14
after wife	9
after wind				7
after without	14
after won't latch	6
after work	28
after worn	30			-4
after worst	22
after worth	34	-19		-5
after would		14
after wound	-20	24
after wrap	-13			7
after wrong		-15				19
after x	-6	11
after y'all	7
after yellow	11
after yep	12
after you're		22
after zone	-35		24	18
again bought			13		-36
again have	27		-38
again need	62	-66	10	-12
again returned	-21		-12	-5	30
again used			60	-71
ahead #		7
ahead &	-26	24		4
ahead '	4			-5	11
ahead +	-17
ahead /	9
ahead 3	-5			12
ahead 5	14
ahead =	23	-14	-16	-14
ahead @	34
ahead above	13
ahead abt			6
ahead acclimatising	19			-5
ahead account	15
ahead actually	-20	-19	11		21
ahead add				4
ahead adjust	18
ahead afternoon	18
ahead against	27
ahead ain't	9
ahead air	15
ahead alarm	30
ahead alive	23
ahead all				13
ahead almost			14
ahead alvarez	-9	15
ahead am			7
ahead american	26	-10
ahead anchor	-8		13
ahead angle		-4		7
ahead any	-6	13
ahead anybody	18
ahead anyhow	8
ahead anyone	14
ahead apart	13
ahead apartment	15
ahead arm				12
ahead around	14
ahead arrive			4
ahead attic room	-9			16
ahead attic's	5	9	-16	-6
ahead b	33
ahead baby	20
ahead back bedroom	20
ahead back porch	12
ahead back wall	15
ahead backing up	9
ahead backsplash		10
ahead bad	28	-7
ahead bag			22	-26
ahead bakery	13
ahead balance	-8		11
ahead balcony		10
ahead ball	17
ahead band		7		-6
ahead bang			-18	15
ahead bank	-8	20	-9	-10
ahead barber	6
ahead bare	23
ahead basement bath	-13			20
ahead bathroom	11
ahead bay	11
ahead bc	25	-5
ahead bead	-19	4
ahead bear			-5	13
ahead bearing	16
ahead beaut	8
ahead bed	20	-16
ahead bedroom	14
ahead bedroom 1				5
ahead bedroom 2	21
ahead bedrooms	17
ahead belly in	8
ahead below	12
ahead bend		-17
ahead beto	14
ahead better		15		-13
ahead between	39
ahead big	23
ahead bigger	7
ahead bill		10
ahead bin		17	-21	-10
ahead black				-8
ahead bled	11
ahead bless	9
ahead blister	29	-10		-21
ahead block				4
ahead board	-17	23
ahead bolt				16
ahead bond		16
ahead bone	10
ahead bonus room	10
ahead book			10
ahead bore	-17	-16	-16	35
ahead both	13
ahead bottom	6
ahead boundary	14
ahead bowl	10
ahead boy	21
ahead boys	17
ahead br		-10		18
ahead bracket	9			-20
ahead bring		11
ahead bro	9
ahead brown				8
ahead brush	10	-12	15	-29
ahead bubble	7
ahead build	-13				19
ahead builder		13
ahead building control	11
ahead bulkhead	-20			22
ahead burn				18
ahead bury	8
ahead bust	10
ahead butter	12
ahead buy					7
ahead buzz	6
ahead c	14
ahead cab	-12		11	5
ahead came off	20
ahead cap	-9			23
ahead car	8
ahead card		-4	-5	10
ahead care	22	-5		-14
ahead carpenter's	21			-12
ahead carry		9
ahead cat	20	-8
ahead catch	5
ahead ceiling's	35			-4
ahead ceilings	4
ahead cellar	9
ahead center	17
ahead centre	12
ahead centres	27	-6		-5
ahead chair	20			-11
ahead chalk	15
ahead channel	24
ahead charge	11
ahead check	5
ahead choose	10
ahead chrome	-17	23
ahead chunk	16
ahead circuit	32			-8
ahead clamp	-7	-7		29
ahead cleaner				9
ahead clearance	10
ahead client	29	-12
ahead clinic	15
ahead clip		-5
ahead closet	5
ahead coat			6
ahead code	45	-28
ahead coffee	22			-8
ahead coffee's	5
ahead cold side's	29		-6
ahead color			10
ahead coming up	7
ahead complete	17
ahead compound		5
ahead connect	19			-5
ahead contact		-4	15
ahead contractor	6
ahead cope	21
ahead core	19
ahead corridor	33	-6		-8
ahead could	11			-5
ahead couldn't	21
ahead count			9
ahead counter	25
ahead county	24	-18
ahead course	22			-5
ahead crawl	-18			24
ahead crook	12
ahead crown	12
ahead crumbling				4
ahead crush	20
ahead cup			13
ahead cure			-9	15
ahead cust		5
ahead customer	21
ahead cut out	28
ahead d	11
ahead dad	16	-8
ahead damp	18
ahead dark	15
ahead date		12		-17
ahead daylight		9
ahead dead				10
ahead deck				7
ahead deck's	-12		-9	21
ahead deep	11
ahead dense				5
ahead dent	4
ahead dentist's	16
ahead desmond	11
ahead di	23	-12		-10
ahead diagonal	15
ahead dial	13
ahead die	4
ahead difference	7
ahead different	11
ahead dig	-4	13
ahead ding	24
ahead dining	17			-7
ahead dining room	9
ahead dinner	6
ahead dip		10
ahead discharge	21
ahead disconnect	32	-6		-12
ahead dock				6
ahead dog's	10
ahead dormer	6
ahead doubl	23			-9
ahead double	-8	-17	12	6
ahead draft	10
ahead drags	12
ahead drags on	8
ahead drain line	24			-21
ahead dribbles	22
ahead drill	7
ahead drip	20
ahead driver	-25			5		23
ahead driveway	14
ahead drop	6
ahead drum	12
ahead drywall	6
ahead dump				7
ahead dust	24
ahead each	21
ahead early		-11		7
ahead ease	21
ahead east	13
ahead eat				25
ahead edg	16
ahead edges	-11		6	7
ahead eggshell	-20	25
ahead eighth	15
ahead either	29
ahead electric	13
ahead electrician	6
ahead else			5
ahead email	6
ahead empty	13
ahead ends	-4		12
ahead enough			20
ahead ensuite				5
ahead entry	10	-12	-10	9
ahead even		-11		12
ahead evening	5
ahead ever		7
ahead exam					7
ahead exhaust	11
ahead exterior	9
ahead extra		-12	-21	18		15
ahead face	12
ahead fail	8
ahead falls	12
ahead falta		15	-9	-16
ahead family room			-8
ahead far	-14		12
ahead feather	22
ahead feed	10
ahead feel	22
ahead feet	-29	22	-6	5
ahead fell	-6	20	-9	-8
ahead fell off	7
ahead fella	23			-4
ahead fence	-5			14
ahead fifth	-4	-6		15
ahead figure		18
ahead file	11
ahead fill				9
ahead finally	21			-17
ahead finish				9
ahead first fix	11
ahead fish	17
ahead fit	-6				16
ahead five's	11
ahead flap	6
ahead flaps	16
ahead flat roof	6
ahead flexible	-27	32
ahead flood test	-10		18
ahead floor guys	12
ahead floors	20
ahead flush	10
ahead foam				20
ahead foil	-8		20
ahead folks	24			-4
ahead foot		18	-14	-27
ahead footing				9
ahead footings	17	-5		-4
ahead forget		15
ahead form	14
ahead fourth	14
ahead foyer	9
ahead framing's	17
ahead fre	-5	-9	20	-14
ahead free	9
ahead fresh	-28			22
ahead front				10
ahead front room	37			-21
ahead fronts	19			-13
ahead gable	26
ahead gallon	-12	-13	22	-5
ahead galvanize	14
ahead garbage	19
ahead garden	33			-12
ahead gary	-5		16	-11
ahead gas				11
ahead gauge	20	-4
ahead girls	7
ahead give						9
ahead glass guy	5
ahead golf	23			-4
ahead good	5
ahead gouge	8
ahead grab		15
ahead gray	-12		21
ahead green	-10	21
ahead grey	15
ahead grout	9
ahead grunt	-19	-18	11	17
ahead guard	-12	-11		20
ahead guess		12
ahead guest room	29
ahead guide	30	-22
ahead guy	13
ahead guys	33
ahead gym	7
ahead hair	17			-7
ahead hairline	5
ahead hairline crack	8
ahead half	-11		22
ahead halfway	-14	22		-17
ahead hall	10
ahead hall closet	-24		22
ahead hallway's				10
ahead hand	7	-10
ahead happy	13
ahead hard			-5		9
ahead hardy			-6	15
ahead hasn't	31
ahead haul	11
ahead haven't		24	-12	-8
ahead he	5
ahead he'd	16
ahead head	7
ahead headroom	6
ahead hearth	6	-12		5
ahead heat	-24	14	14
ahead heavy		11
ahead height	12			-7
ahead height's	20			-9
ahead hello	10
ahead hendersons	18
ahead here's	10
ahead hers				4
ahead hiding			18
ahead high	28
ahead high spot	10
ahead higher		5
ahead him			4
ahead hip	27	-18
ahead ho		13
ahead hole's		5
ahead holes	12
ahead holiday	4
ahead hollow	7
ahead home		-29	-22	-24	36
ahead honeycombing	8
ahead hook				8
ahead hot side	6
ahead hot water	26			-13
ahead house	13
ahead how	-22		16
ahead hub	22
ahead hum	4
ahead humidity	11
ahead hump	14
ahead i'd		30		-14
ahead i'm		11
ahead i've			25
ahead image	22
ahead inch	-39	43
ahead inside					5
ahead inspection	-14				25
ahead inspector	12
ahead install	-9			22
ahead instead	22
ahead intake	8
ahead island	-5			14
ahead isn't	21
ahead itself		11
ahead jam	14
ahead jess				10
ahead job		-8		5
ahead join	-16			24
ahead joker	26			-22
ahead k	25	-9
ahead kerdi	-11	21
ahead kick	12
ahead kid's	9
ahead kid's room	8
ahead kids	16
ahead kids room	8
ahead kill	10
ahead kind	18	-9
ahead kindly	-16	20
ahead kit	-7		4
ahead knees	12
ahead knit	13
ahead knock	12
ahead know				21
ahead kowalski	9
ahead l	16
ahead la	9
ahead label	16
ahead ladder				9
ahead lady	23			-11
ahead lady's	16
ahead lake		-5				10
ahead land	29
ahead landlord	28	-20
ahead lane	12
ahead language	12
ahead laser	24	-19
ahead last	-17		28
ahead laundromat	27			-14
ahead laundry	24
ahead laundry room					11
ahead lawn	6
ahead layer	-18	-5		16
ahead layers	23
ahead lead				6
ahead leaf	25		-19
ahead leakage	21
ahead lean	5			-8
ahead leaning	6
ahead leans	19
ahead least		6
ahead led		6
ahead left hand	4
ahead legs		16	-8
ahead lentil	-12			17
ahead less	11
ahead let go		13
ahead level	13
ahead lift	20
ahead line's	7
ahead linen	-10	-8		20
ahead linen closet	-28			29
ahead liner	20	-6
ahead list		-26	17
ahead listen	16
ahead lit	-5	-11		15
ahead little	28
ahead live	10
ahead living	15
ahead living room	33
ahead load	23
ahead lobby	15
ahead lock				-9	4
ahead long		7
ahead long wall	20			-10
ahead longer	-5	10
ahead loop	18
ahead lord	22
ahead lose	6
ahead lot	4	-6
ahead lounge	11
ahead love				12
ahead lower	12
ahead luis	43	-16	-9	-24
ahead lunch	14
ahead machine	28	-16
ahead main	10
ahead maple		4
ahead mark	13
ahead master	16
ahead mat	10
ahead mate	-32	30
ahead max	24
ahead maybe			26
ahead means	13
ahead meantime	-5			12
ahead meanwhile				4
ahead measure	11
ahead meet	16
ahead melt	8
ahead metal	-27	18	19	-29
ahead mid	26
ahead middle	4			-5
ahead mill	-10				21
ahead mind	14
ahead mine	26
ahead mine's	22	-4
ahead minus	27			-12
ahead miss		12
ahead miter		-6
ahead moisture	29			-6
ahead moisture meter	25	-12
ahead moisture's	23			-6
ahead mold	21
ahead morning	6
ahead mortar				13
ahead mortise	21			-11
ahead mount				14
ahead mouse	-10			16
ahead movement	7
ahead mr	21
ahead mrs	15
ahead muck	-9		-4	15
ahead mudd	12
ahead mudroom	13
ahead must	12
ahead my	4			-5
ahead myself	-28			26
ahead nah	13
ahead nail holes				13
ahead nearly	-26	-9		32
ahead need		19
ahead neighbor	30		-13
ahead nest	-9			16
ahead new				6
ahead news	4
ahead next	17
ahead nice	-9			9
ahead niche	4
ahead nick	26
ahead night	12
ahead ninth	14
ahead nobody	31
ahead none	5
ahead noon	-20	9			16
ahead north	11
ahead north wall	13
ahead not	8
ahead not even	5
ahead notch	14
ahead note	15
ahead notice	10
ahead nowhere		8		-14
ahead number	11
ahead numbers	21
ahead nursery	-8	-6		25
ahead nursery's	15			-5
ahead oak		-7		21
ahead office	16
ahead oil	17
ahead okafor's	-4			13
ahead old	19
ahead one's	46
ahead ones					8
ahead onto	9
ahead opened up	27	-9
ahead order		20
ahead oughta	15
ahead our	30			-25
ahead out of plumb	13
ahead outfit	11
ahead outta	35	-8
ahead owe	-4	24
ahead own	20
ahead p	-17		-5	18
ahead pack	-7			24
ahead painted shut	18
ahead painter	18
ahead pair	15
ahead pantry				12
ahead paper		14		-10
ahead park	16
ahead parlor	18
ahead part	20	-7		-9
ahead parts	-8	17
ahead party wall	15
ahead pass		-10		10
ahead patio	22
ahead patron	10
ahead pay	27			-12	-8
ahead peeling off	7	-21		6
ahead people	21
ahead pick		10			14
ahead picture frame				13
ahead piece	23
ahead pieces	-11	20		-15
ahead pier		-10	15
ahead pile	-9		17
ahead pin	-20	-10		22
ahead pinch	14
ahead pine	7
ahead pinhole	14
ahead pit				6
ahead pitch	13
ahead place				5
ahead plan	18
ahead plane	24
ahead plaster	-10				11
ahead plate's	30	-6	-6	-14
ahead plenty	-23		35
ahead plow	26			-21
ahead plumb	23
ahead plumber's	-13	20		-5
ahead plus				-13
ahead pocket	10
ahead polish	15
ahead pool	16
ahead pop	8
ahead porch	18
ahead pour				6
ahead pressure	5
ahead pressure treated	-6	12
ahead pressure's	30			-12
ahead pretty	5
ahead price	29	-10		-8
ahead promise	-26	31		-10
ahead prop	14	-9
ahead proper	-28	13		12
ahead proud of	8
ahead pull	13
ahead pump		-7		9
ahead push	17
ahead quick	8
ahead quiet	21			-5
ahead quit	11
ahead quote	16
ahead r		17		-13
ahead rack	6
ahead rain			5			5
ahead raise	5
ahead rake	14	-28		4
ahead rate	12
ahead rather	22
ahead raw	11
ahead ray	16
ahead re	18
ahead reach	9
ahead read	17
ahead ready	-5	14
ahead real	5	-13
ahead rebuild	-20			32
ahead reckon		16		-7
ahead red	18
ahead redo	-17	7		10
ahead rehang				5
ahead rekey	31			-9
ahead relay				9
ahead remains	25
ahead remake	-14	11		7
ahead remind		-5
ahead rent	27	-17
ahead rental	28
ahead reorder	-16	11			11
ahead rep	25
ahead repair	-25	-17		34
ahead replace	-10			22
ahead replacement	24
ahead report	17
ahead require	-11		11	-14
ahead reset				7
ahead rest	-26		21
ahead restroom	9
ahead return				-9		11
ahead reveal	18
ahead reveal's	17	-4
ahead rick		8
ahead ridge	21	-4
ahead ring				12
ahead rink		13		-12
ahead rise	25
ahead rm	11
ahead rock		-13	-14	14
ahead rocking	17
ahead rocks	9
ahead roof	33
ahead room	34
ahead roots	22
ahead rosa	9
ahead rotten		9		-10
ahead rough	11
ahead rough plumbing	20
ahead round	22
ahead rub	7
ahead rubber	-14	12
ahead rudy	17
ahead run's	33
ahead runner	39	-13		-9
ahead s	19
ahead sag	10
ahead sage	-34	31		-20
ahead salon	6
ahead sample	14
ahead sand	32
ahead sander	-14	22
ahead save	6	-10	7
ahead saw	10
ahead school	19
ahead scrap	17
ahead scrape	22
ahead screed	23
ahead screen	6
ahead screw holes	20			-8
ahead screwdriver	26
ahead scuff	11
ahead seal				9
ahead seam	4
ahead seat	14
ahead second	-6	8
ahead second coat	12
ahead second floor's				12
ahead send						11
ahead set				6
ahead setback	36	-29
ahead settle		13
ahead sewing room	-33	-37	37
ahead shave	16
ahead she	5
ahead she'd	18
ahead she'll				15
ahead sheath	8			-8
ahead shed				4
ahead sheet	18
ahead shiny	6
ahead ship				-11	4
ahead shoot			12	-8
ahead shop	-11	6
ahead short	-14	36
ahead shorted us	-31	40		-7
ahead shot				23
ahead shove			18	-18
ahead show	13
ahead shower floor	-10		4	9
ahead shut	15
ahead shy		7
ahead side's	-16	-11	21
ahead sign			7
ahead silicone					5
ahead sink cutout	10
ahead sinking	-13			19
ahead sir	13
ahead sister				16
ahead size	14
ahead skip	15
ahead skirt	-11	9
ahead slab's	24
ahead slap	24			-12
ahead sledge	12
ahead slid	-30			37
ahead slip	6	13	-9	-22
ahead slope	13
ahead small	20
ahead snag		17	-6	-16
ahead snake	30
ahead snap	6		4	-7
ahead snug				5
ahead soak				6
ahead soap	-15			19
ahead socks	10
ahead soft	-26	24
ahead soft close	25
ahead soft spot	8
ahead sold	14
ahead solder	-21	16			5
ahead some				-11
ahead somebody's	26
ahead someone	4
ahead something				11
ahead somewhere	21
ahead soon	-13	20
ahead sorry	15
ahead sort		13		-12
ahead sound	27
ahead south wall	8
ahead spare		-5	20
ahead spec	19			-6
ahead special	9		-15	9
ahead spend	-18	-12	-14	29
ahead spill	5
ahead spin	16
ahead spins				-12
ahead spitting	12
ahead splash	33
ahead splice	8
ahead split	8
ahead sponge	15
ahead spray	12
ahead sprayer	-24	18		6
ahead squeak		-7		13
ahead stack		-20	7
ahead stagger	-10			16
ahead stain	16
ahead staircase	17
ahead stairs	-7			17
ahead stairwell	14
ahead stand	10
ahead staple	18			-21
ahead start	8
ahead static	17
ahead stay			16
ahead steam	-8			16
ahead steel	15
ahead steps	56	-10		-7
ahead sticker	17
ahead stiff	11
ahead stock	-11	-18	26
ahead stop		9
ahead store	-16	14	-15	-18	13
ahead straighten	21
ahead strap	-14	10
ahead streak		13
ahead street	11	-9	-6	-9	14
ahead strike		15
ahead strip	4
ahead strong	17
ahead stub				9
ahead stucco				12
ahead stuff	-5	10
ahead suit	10
ahead sunroom	16	-10
ahead super	29
ahead sure	13
ahead surprise		12
ahead surround	-12	17
ahead swap	-10			21
ahead swear	28	-17
ahead sweat	-17	-14	7		7
ahead sweep	6
ahead sweet	28
ahead swing		10
ahead system	13
ahead t	9
ahead tack	16
ahead tae	13
ahead tag				5
ahead talk	10
ahead tank's	6
ahead tape	7
ahead temp	26
ahead template	4
ahead temporary				6
ahead tenant	11
ahead terminals	25			-16
ahead test	15
ahead text	13
ahead that'll	-5		-14	-22	18
ahead the kid	16
ahead the kids	20
ahead the lab	16
ahead the lady's	25
ahead the wife	20
ahead the yard	15	-7		-12
ahead thermal	25
ahead thermometer	15
ahead they	6
ahead they'll	5
ahead they've			6
ahead thick	-16			29
ahead things	19
ahead third		-8
ahead third coat	11
ahead thirds				7
ahead though		-13	-12	4
ahead three	11
ahead through				6
ahead tie	12	-6
ahead tight	15
ahead time	-9
ahead tin	14		-8
ahead together				8
ahead tony	-27		21	8
ahead too high	8
ahead too long	11
ahead too short		-11				18
ahead top's	18
ahead torque	13
ahead total	-4		-10	15
ahead touch	10
ahead touch up	22
ahead toward	14
ahead traffic	21
ahead treat	18
ahead trim	-10	9
ahead trip	29	-11
ahead trust	7
ahead tube	-25	-5	-7	31
ahead tubes	-8	14
ahead twice	5
ahead two				7
ahead u	18
ahead undercut	22
ahead underneath	9
ahead underside	20
ahead understand	17
ahead unit						13
ahead unless	14
ahead uphill	19
ahead upper				9
ahead upstairs	7
ahead upstairs bath		-12	-11	15
ahead us		17
ahead use				18
ahead vacuum	11
ahead van	-16	-13	28	-11
ahead varnish	5
ahead very	23			-18
ahead vs	9
ahead wad	6
ahead wall's	17
ahead walls	11
ahead walnut	12	-11	-19	12
ahead wanna	7
ahead wardrobe	12
ahead warm	17
ahead wash	23
ahead wasn't	-4	16		-8
ahead waste		6
ahead water	6
ahead water line	15
ahead water proof	-17		19
ahead wavy	10
ahead wax		12
ahead way	24
ahead we'd	-30	41		-20
ahead we'll		32
ahead we're	-4
ahead we've		-18	23
ahead weatherstrip	18	-8
ahead wedge		8
ahead wee	4
ahead week	12
ahead weep		6
ahead weigh				4
ahead weight	39
ahead weld		-11	14
ahead were	18
ahead weren't	33			-26
ahead wet	17
ahead what's	-10		25	-11
ahead when	5
ahead white	-15	9	16
ahead whitlock's	27			-11
ahead who	24
ahead who's	11
ahead whoever	19
ahead will		14
ahead wind		12		-5
ahead within	24
ahead without	-17	16
ahead wobble			12
ahead won't		11
ahead won't latch	8
ahead wont	5
ahead work			4
ahead worth	11
ahead would		7
ahead wrong	26
ahead wrote	12
ahead x		11
ahead ya				9
ahead yeah	6
ahead yellow	4
ahead yet	4
ahead you'll	11
ahead you're		14			-12
ahead your	11
ahead zip	11
any	238	-98	-144	-86	-280	-319
area after none far	5		10	-34
area after used sentence	6	-7
area before it have		-8	18
area before it need		14		-25
area before it used			-9
area behind it have	20	-12
area behind it lacks	-14	15	-5	4
area behind it need	-19	26	-6
area behind it used	10	-21
area beside finish	-5			12
area beside is	-16		6	17
area beside nothing		-12		10
area beside other b other		15		-20
area beside undefined is other	-9			19
area beside work b other				8
area cue have	-15	-6	30
area cue lacks	-19	13			13
area cue need	-8	21
area cue used	-5
area flawed	11		-7
area left ,			-6	13
area left about	49		-6	-28
area name flawed	-9			19
area named before material	-5			10
area named before part	31	-11		-21
area named before surface	20
area named before word	-5	20		-7
area named here material	-41	6	-5	37
area named here word	-22	-12	11	13	9
area null copula behind	-16	-17	12	13
area null none no	8			5
area other past behind	8
area pointing	8
area right ,		-7		10
area right .	-19	15		9
area right Q	11		-7
area right and	-13		7	7
area says copula behind	-25	9	8	10
area says modal behind	-31	41	-19	-22
area says none no	8			5
area says past before	-14			22
area says past behind		-15	-5	15
area says present behind		-16	23	-24
area sold so false	-8			23
area sold so true	-6	12	-5
area then use pp	-26		14	20
area then work b	-7	-15	12
area then work pp	-15			29
area verb get behind				5
area verb null behind	-16	-17	12	13
area verb null no	8			5
area whole clause	-7			23
area work past before	-23	-5		29
area work past behind	-18	-6	-4	13	18
bare after bought here	20
bare after bought sentence	8
bare after have far	7
bare after returned here	11
bare before it ate						5
bare before it bought	6
bare behind it ate	14
bare beside add	36
bare beside adjust	7
bare beside am	20
bare beside arrive	20
bare beside back	13
bare beside bag	19
bare beside bend	36
bare beside bet	16
bare beside bleed	5
bare beside block	10
bare beside blow	9
bare beside book	9
bare beside bore	24			-7
bare beside borrow		4
bare beside bow	4
bare beside bring	-12	20
bare beside build	32
bare beside burn	11
bare beside butter	15
bare beside buy	39	-6
bare beside buy b nobody		6
bare beside buy b other	21
bare beside buy b person		15
bare beside buy i person	8
bare beside buy pp nobody	22
bare beside buy pp other	53	-24
bare beside buzz	15
bare beside can	5
bare beside can't	7
bare beside cap	-5			15
bare beside carry	14
bare beside caulk	17
bare beside choose	10
bare beside clamp				12
bare beside clear	20
bare beside clip	15
bare beside clog	14
bare beside coat	11
bare beside come	8
bare beside complete	19
bare beside count	27
bare beside cure	15
bare beside demo	12
bare beside didn't	9
bare beside die	6
bare beside dig	15
bare beside drive	19
bare beside drop	19
bare beside dry	6
bare beside duct	10
bare beside dump	16
bare beside ease	5
bare beside eat	32
bare beside email	-4			11
bare beside empty		15
bare beside face	14
bare beside feed	17
bare beside figure	26	-5
bare beside file	14
bare beside fit					11
bare beside fix	17
bare beside flash	19
bare beside flip	13
bare beside float	20
bare beside forget	26
bare beside frame	14
bare beside fre	16
bare beside get	4
bare beside give	24
bare beside go	4
bare beside grab	35	-22
bare beside grind	13
bare beside grout	-16			21
bare beside guess	29	-13
bare beside happen	6
bare beside has	5
bare beside haul	12
bare beside have	6
bare beside have i person	20
bare beside have pp nobody	9
bare beside have pp person	21
bare beside he'll	6
bare beside head	29
bare beside hold	13
bare beside hook					11
bare beside i've	-6	18	-17
bare beside install	25
bare beside insulate	6
bare beside is	4
bare beside isn't	8
bare beside it'll	-18	-8	22	-5
bare beside keep	15
bare beside label	17
bare beside land	-4	12
bare beside lay	12
bare beside leave	11
bare beside like	6
bare beside love	6
bare beside mark	-8	15
bare beside match	30
bare beside measure b person	6
bare beside measure bp person	26
bare beside measure bpp nobody	-9			16
bare beside measure i person	5
bare beside measure pp nobody	13
bare beside measure s nobody	9
bare beside miss	5
bare beside mitre	5
bare beside mix	11
bare beside mount	17
bare beside move b nobody		7
bare beside move b person	6
bare beside move i nobody	9
bare beside move i other	24
bare beside move i person	16
bare beside move p nobody				11
bare beside move p other	32
bare beside move p person	42
bare beside move pp nobody	30
bare beside move pp other	11
bare beside move pp person	16
bare beside move s other	25
bare beside move s person	5
bare beside need b other	16	-6
bare beside need pp other	20
bare beside need s nobody	-12	20
bare beside oil	20
bare beside open	7
bare beside other i person	16
bare beside other p nobody						5
bare beside other pp nobody	5
bare beside other pp other	16
bare beside other s person	13
bare beside owe	6
bare beside own	12
bare beside pack	-6			7
bare beside pass				8
bare beside pay	5
bare beside peel	9
bare beside phone	12
bare beside pick	17	-10
bare beside pin	26			-4
bare beside pitch	11
bare beside place	29
bare beside point	4
bare beside polish	10
bare beside pop	9
bare beside prime				6
bare beside prop	23
bare beside quote	8
bare beside rack	11
bare beside raise	5
bare beside rake				8
bare beside rebuild	41			-24
bare beside recess	10
bare beside recut	9
bare beside redo		17
bare beside reglue	11
bare beside rehang	19
bare beside repair				6
bare beside replace	-14			15
bare beside reroute	6
bare beside reset				4
bare beside return	-10		13			5
bare beside return b nobody	19
bare beside reverse	10
bare beside ring	11
bare beside rock	22
bare beside rot	9
bare beside sand	-8
bare beside save			12
bare beside say b person	9
bare beside say i person	18
bare beside say pp other	12
bare beside say s person	16
bare beside screw	33
bare beside see b nobody	9
bare beside see b person	9
bare beside set	16
bare beside shave	6
bare beside shim	6
bare beside ship	18
bare beside short	11
bare beside should	28
bare beside shove	15
bare beside show	12
bare beside shut	8
bare beside sign	-13		20
bare beside silicone	12
bare beside sister	14
bare beside size	5
bare beside skim	9
bare beside skin	16
bare beside slid	-9			14
bare beside slit	20
bare beside smell	4
bare beside snap	11
bare beside snug	9
bare beside soak	15
bare beside soap	6
bare beside sort	13
bare beside sound	10
bare beside space	10
bare beside square	15
bare beside squeak	11
bare beside stack	35			-8
bare beside stain	10
bare beside stand	9
bare beside stay	18
bare beside stick	31
bare beside straighten	24
bare beside stretch	16
bare beside strip	13
bare beside stuff	5
bare beside supply		10
bare beside swap				4
bare beside tack	4
bare beside take						6
bare beside talk	6
bare beside tape	26
bare beside tell	8
bare beside think	17
bare beside throw	38
bare beside tie	18
bare beside tile	7
bare beside tin	5
bare beside top	9
bare beside torque	5
bare beside touch	6
bare beside trace	5
bare beside treat	26	-7
bare beside trim	20
bare beside turn	17
bare beside undefined has person	6
bare beside undefined is nobody	11
bare beside undefined will nobody	15
bare beside update	10
bare beside use	6
bare beside use b other	36
bare beside use b person				-26		19
bare beside use pp nobody				5
bare beside use pp other				5
bare beside use pp person	25
bare beside walk	18
bare beside watch	7
bare beside wipe				8
bare beside wire	6
bare beside won't	6
bare beside work b nobody	36
bare beside work bp nobody	15
bare beside work bp other	10
bare beside work bp person	25
bare beside work i nobody	18
bare beside work i person	19
bare beside work p nobody				4
bare beside work p other	5
bare beside work s nobody	17
bare beside wouldn't	5
bare buy imperative behind		13
bare buy owed before	-32	37		-11
bare buy owed behind	28	-10
bare buy past behind	9
bare buy present behind	40	-27
bare have imperative behind	9
bare left 
	6
bare left #	6
bare left &	-16	20
bare left '	10
bare left (	16	-4
bare left )	14
bare left *			16
bare left ,	11
bare left /	13
bare left ;	6
bare left ?	10
bare left @	6
bare left T	17
bare left ]	-6				17
bare left about	24
bare left across	10
bare left add	27
bare left adjust	6
bare left after	9
bare left again	5
bare left against	14
bare left all	42
bare left along	11
bare left already	29
bare left are	11
bare left around	19
bare left as	8
bare left ask	7
bare left attic	17
bare left away	13
bare left bad	11
bare left balcony	13
bare left bar	11
bare left bare	14
bare left bath	20
bare left bathroom	10
bare left be	23
bare left bedroom	7
bare left bedroom 2	13
bare left before	17
bare left behind	10
bare left below	5
bare left bend	17
bare left beside	19
bare left blow	16
bare left borrow		11
bare left boss	7
bare left box	22
bare left br	17
bare left break	23
bare left butter	12
bare left buy	45	-30
bare left c	5
bare left catch	-9	15
bare left caulk	6
bare left cellar	10
bare left check	7
bare left chip	-7			13
bare left choose	10
bare left clean	5
bare left clear	6
bare left clip	25
bare left closet	15
bare left color	11
bare left dead	12
bare left deck	22
bare left deep	5
bare left den	5
bare left dining room	7
bare left do	18
bare left down	13
bare left drags on	8
bare left drill	8
bare left drop	17
bare left eat	19
bare left either	6
bare left em	10
bare left empty	22
bare left end	15
bare left enough	14
bare left entry	9
bare left every	-9			25
bare left except						14
bare left exterior	10
bare left family room	8
bare left feed	8
bare left fifth	8
bare left file	7
bare left fill	9
bare left fine	15
bare left finish	6
bare left first	18
bare left fit	-16				22
bare left fix	6
bare left flip	12
bare left floor			13
bare left for	12
bare left forget	17
bare left frame	5
bare left front	5
bare left garage			8
bare left glue	19
bare left good	15
bare left grind	8
bare left grout	12
bare left guest bath	7
bare left guest room	12
bare left half	-9		18
bare left hall bath			5
bare left hallway	10
bare left hand	18
bare left haul	13
bare left hi	10
bare left him	12
bare left house	11
bare left how	12
bare left i'm	31
bare left i've	-18	23	-15
bare left if	14
bare left inside	32
bare left insulate	9
bare left it	27
bare left it's	11
bare left just	30
bare left keep	16
bare left knock	8
bare left ladder	6
bare left laundry	9
bare left laundry room	10
bare left library	16
bare left lift	6
bare left like	9
bare left linen closet	19
bare left listen	7
bare left loft	17
bare left long	9
bare left loose	12
bare left man	10
bare left mark	9
bare left master	4
bare left master bath		9
bare left match	10
bare left maybe	17
bare left me	26
bare left meantime	14
bare left measure	4
bare left meet	5
bare left mind	12
bare left miss	16
bare left more	14
bare left mudroom	12
bare left n	14
bare left near	13
bare left never	10
bare left news	8
bare left nice	-17			21
bare left nothing	-20			23
bare left office	7
bare left oil	4
bare left okay	5
bare left on	9
bare left once	9
bare left only	38
bare left onto	9
bare left open	20
bare left or	22
bare left order	-8	13
bare left out	11
bare left outside	10
bare left outta	13
bare left owe	24
bare left pack	42			-8
bare left paint	4
bare left pantry	19
bare left pass				18
bare left patch	15
bare left pick	31
bare left place	25
bare left please	29	-12
bare left plug	18
bare left plumb	5
bare left plus	24	-13
bare left porch	6
bare left pour		14
bare left powder room	10
bare left prime	-11			19
bare left proud of	9
bare left quick	6
bare left redo	26
bare left replace	-20			29
bare left return	-29		23			17
bare left right		9
bare left ring	10
bare left rip	6
bare left roof	-21			24
bare left room	7
bare left round	9
bare left run				5
bare left sand						10
bare left scratch			15
bare left screw	29
bare left seal	13
bare left second	10
bare left shave	6
bare left she	10
bare left shed	21
bare left shift	9
bare left shop	22
bare left short	29	-19
bare left sign	-20		23
bare left since	12
bare left sir	6
bare left sit		13
bare left snap	9
bare left snug	9
bare left so	27
bare left sort	15
bare left split	8
bare left stairs	14
bare left stairwell	4
bare left step	5
bare left stick	16
bare left still	22
bare left stop	-14	20
bare left strip	16
bare left supply	6
bare left take						35
bare left tell	7
bare left that	-15		18
bare left that's	43
bare left them	19
bare left then	7
bare left there	29
bare left they're	23
bare left thing	27
bare left think	11
bare left third	15
bare left though	12
bare left til	16
bare left tile	22
bare left time	11
bare left too		10
bare left trim	24
bare left truck	14
bare left turn	11
bare left until	12
bare left upstairs	10
bare left upstairs hall	15
bare left use	19
bare left wait	8
bare left wardrobe	14
bare left we	10
bare left we're	21
bare left well	17
bare left wet	9
bare left which	11
bare left white	21
bare left without		15
bare left won't	4
bare left wrap	5
bare left yeah	11
bare left your	15
bare left •					8
bare left ☐	-17	21		-7
bare list have	32
bare list need		8
bare list used	33			-21
bare measure modal before						11
bare measure modal behind		17
bare measure owed behind	8
bare measure past before			5
bare move modal before	20
bare move modal behind	13
bare move owed before	-12		24
bare move owed behind	12
bare move past behind	11
bare move present before	11
bare named here area	20
bare named here defect	15
bare named here role	23
bare named here word	10
bare named here work	26
bare nameless	43
bare need modal before	18
bare need modal behind	15	-7
bare need past before	-5					16
bare need past behind	10
bare null imperative behind	5
bare null modal before	17
bare null modal behind	4
bare null owed before	10
bare null owed behind	5
bare null present behind	20
bare other modal before	4
bare other owed before	12
bare other owed behind	14
bare other present behind	7
bare right !	17
bare right #	8
bare right &		8
bare right (						13
bare right +		4
bare right /		-9	18	-15
bare right ;	7
bare right =	20
bare right @	49
bare right G		10		-9
bare right Q	27
bare right T	12
bare right a	15
bare right across	8
bare right all	14
bare right along	25
bare right already			13
bare right also		11
bare right another	16
bare right aren't		8
bare right arrive	9
bare right at	11
bare right back						9
bare right bag	-12	19
bare right because	11
bare right behind	29
bare right bind	7
bare right block	10
bare right bolt	25
bare right bore	27			-9
bare right both				18
bare right box	33
bare right break	30
bare right bring	30
bare right bubble	6
bare right but	5
bare right buy	36	-26			-16
bare right by	7
bare right can't	24
bare right caulk	11
bare right cause	10
bare right change				11
bare right chew	13
bare right chewed up	7
bare right clean	6
bare right clip	20
bare right close	14
bare right core				12
bare right cover	10
bare right cure	6
bare right dead	5
bare right deliver	-14	-8	24
bare right didn't	23
bare right dig	6
bare right down	10
bare right dry	9
bare right dump	8
bare right each	20
bare right every	10
bare right find	15
bare right fine	8
bare right finish	21
bare right fit				15
bare right fix	8
bare right flush	16
bare right frame	14
bare right give	8
bare right glue	16
bare right gonna	20
bare right good	34
bare right grab	20	-6
bare right grout	17
bare right hasn't		11
bare right he's	21
bare right head				10
bare right here			17
bare right him	8
bare right his	4
bare right hold	21
bare right hook	6
bare right i'd	19
bare right if	12
bare right inside	5
bare right install	25
bare right into				5
bare right just	6
bare right keep	8
bare right land	12
bare right lay	6		7	-23
bare right leave	13		-6
bare right lift	5
bare right look	5
bare right loose	18
bare right lose		11
bare right lower	13
bare right make	15
bare right me	12
bare right more	16
bare right mount	8
bare right move	6
bare right my	16
bare right need	15
bare right never				11
bare right nobody	-25		13	13
bare right notch	12
bare right nothing	18
bare right of	29
bare right off	17
bare right oh	20
bare right oil	10
bare right only	13
bare right or		9
bare right order	18
bare right out	14
bare right over	29
bare right pass	5
bare right patch	13
bare right peel	-6	15
bare right pick	5
bare right plumb	11
bare right pour	6
bare right rehang	12
bare right replace				5
bare right right	5
bare right rip	19
bare right roll	-12		21	-17
bare right rough	5
bare right rust	12
bare right sag	5
bare right scratch	7
bare right screw				11
bare right scribe	25
bare right seal	16
bare right send	13
bare right set	10
bare right she's	13
bare right shim	4
bare right short	39	-7
bare right shot	-10	17
bare right should	21
bare right since		4
bare right sit	13
bare right slam	8
bare right so	5
bare right somebody	12
bare right space	18
bare right squeak	10
bare right stand	14
bare right stay	22
bare right stretch	7
bare right stuff	-7	11
bare right swap	5
bare right swell				13
bare right swing	6
bare right take	15
bare right tape			5
bare right tear	8
bare right test	7
bare right the	18
bare right their	14
bare right them	4
bare right then	28
bare right they're	25
bare right they've	-23	29	-7	-4
bare right throw	9
bare right til	6
bare right to	5
bare right too			5
bare right top	10
bare right toward	11
bare right trim	35			-18
bare right trip	7
bare right under	30
bare right up	6
bare right walk	29	-5
bare right want	13
bare right wasn't	6
bare right we			9
bare right we're		-12
bare right were	34
bare right what	8
bare right when	18
bare right where	16
bare right while	21
bare right will	14
bare right wire	11
bare right wobble	14
bare right won't						9
bare right would	13
bare right wouldn't	7
bare right wrap	13
bare say imperative behind	7
bare say owed behind	12
bare say past behind	4
bare say present before	6
bare says imperative before	5
bare says imperative behind not	16
bare says modal before	8
bare says none no not	11
bare says owed before not		10
bare says past before not	4
bare see imperative behind	15
bare see modal before	5
bare see past before	10
bare then buy b					5
bare then buy pp	14
bare then have pp	20
bare then measure b	16
bare then measure bp	29
bare then measure bpp	8
bare then measure i	9
bare then need pp						9
bare then say s	8
bare then see s	8
bare then use b	-11			21
bare then use pp	16
bare then work bp	9
bare then work i	5
bare use modal behind	21
bare use present behind				-37		21
bare verb add behind	35
bare verb adjust before	12
bare verb adjust behind	5
bare verb back before	17
bare verb back behind	8
bare verb bend behind	8
bare verb bind before	8
bare verb block behind	5
bare verb blow before	11
bare verb blow behind	18
bare verb book behind	7
bare verb bore behind	8
bare verb borrow behind		12
bare verb box before	-11	19		-5
bare verb box behind	11
bare verb break before	13
bare verb break behind	25
bare verb bring before			13
bare verb bring behind	-4	11
bare verb bubble before	12
bare verb buy behind	17
bare verb can behind	10
bare verb cap before	20
bare verb cap behind	30			-9
bare verb carry behind	10
bare verb catch before	6
bare verb center behind	4
bare verb change before	-11			23
bare verb clean before	6
bare verb clip before	16
bare verb clip behind	12
bare verb close before	14
bare verb close behind	13
bare verb come behind	4
bare verb count behind	21
bare verb cover before	7
bare verb cover behind	5
bare verb crack before	-9	4		7
bare verb crack behind	27
bare verb crush before	9
bare verb cure before	4
bare verb cut before		7
bare verb deliver before	-21		23
bare verb demo behind		10
bare verb dig behind	23
bare verb don't before	7
bare verb drill behind	27
bare verb drive behind	23
bare verb drop behind	10
bare verb dry before	-7		17
bare verb dry behind	8
bare verb dump before	25
bare verb ease behind	7
bare verb eat behind	21
bare verb email behind	6
bare verb end behind	22
bare verb feel behind	7
bare verb figure behind	33	-7
bare verb file behind	9
bare verb find before	4
bare verb finish before	16
bare verb fix before	12
bare verb fix behind	25
bare verb flip behind	17
bare verb float behind	18
bare verb flush behind	4
bare verb foam before	16
bare verb forget behind	26
bare verb frame before	12
bare verb frame behind	7
bare verb fray before	6
bare verb fre behind	18
bare verb give before	17
bare verb give behind	17
bare verb glue before	15
bare verb glue behind	28
bare verb gonna before	18
bare verb gonna behind	21
bare verb grab behind		4
bare verb grind behind	9
bare verb grout before	12
bare verb grout behind	17
bare verb guess behind	29	-9
bare verb hit before	6
bare verb hold before	12
bare verb i'll behind	18
bare verb install before	25			-5
bare verb it'll behind	-13	-11	21
bare verb keep behind	17
bare verb kick before	11
bare verb knock behind	12
bare verb know behind				5
bare verb land before	18
bare verb latch before	7
bare verb lay before	20			-18
bare verb lay behind	12
bare verb let before	8
bare verb level behind				6
bare verb lift before	8
bare verb like behind	26
bare verb line before	17
bare verb lose before		5
bare verb make before	9
bare verb mark behind	4
bare verb miss before	15
bare verb miss behind	27
bare verb mix behind	7
bare verb mud before	16
bare verb nail before	4
bare verb nail behind	23
bare verb notch before	9
bare verb oil behind	8
bare verb open behind	23
bare verb order before	-18	27			-12
bare verb order behind		8
bare verb own behind	5
bare verb paint before	10
bare verb pass before	11
bare verb pass behind				14
bare verb patch before	-20			24
bare verb patch behind	17
bare verb peel behind	13
bare verb place behind	38			-10
bare verb plug before	12
bare verb plug behind	-9		14
bare verb point behind	15
bare verb pop before	9
bare verb pop behind	14
bare verb pour behind	-8
bare verb prime behind				11
bare verb put before	18
bare verb raise behind	19
bare verb rake before				11
bare verb rattle before	5
bare verb redo behind		13
bare verb rehang before	14
bare verb rehang behind	22			-9
bare verb remind behind	21	-6
bare verb replace before				13
bare verb replace behind	12
bare verb return behind	-33		25			18
bare verb ring behind	6
bare verb rip behind			9
bare verb rod behind	-22	24
bare verb roll before	27			-5
bare verb roll behind	14
bare verb sand behind	5
bare verb save behind			12
bare verb say before	9
bare verb screw behind	28
bare verb scribe before	20
bare verb scribe behind	15
bare verb seal before	16
bare verb seat before	13
bare verb see before	4
bare verb send before	-13	13	5
bare verb set behind	24
bare verb shim before	16
bare verb ship before	14
bare verb ship behind	14
bare verb should behind	21
bare verb show before	-11		16
bare verb sign behind	5
bare verb silicone before	24	-8
bare verb silicone behind	15
bare verb sit before						6
bare verb skim behind	9
bare verb smell behind	5
bare verb snap behind	5
bare verb snug behind	4
bare verb soak behind	14
bare verb sold behind	14
bare verb solder behind					18
bare verb split behind				5
bare verb spot behind	9
bare verb squeak before	6
bare verb stain behind	6
bare verb stand before	9
bare verb stay before	8
bare verb stay behind	13
bare verb stick behind	13
bare verb stop before	19
bare verb stop behind	20
bare verb straighten behind	16
bare verb strip before	18
bare verb supposed before	16
bare verb swing before	10
bare verb tack behind	6
bare verb take before	18
bare verb take behind						15
bare verb talk behind	5
bare verb tape behind	11
bare verb tear before	6
bare verb tell behind	8
bare verb think before	9
bare verb think behind	6
bare verb throw behind	32
bare verb tie before	6
bare verb tie behind	14
bare verb tighten behind	5
bare verb trim before	20
bare verb trim behind	31
bare verb trip before	14
bare verb turn before	11
bare verb undercut behind	12
bare verb use before	5
bare verb vacuum behind	9
bare verb wait before	7
bare verb walk before	23	-8
bare verb walk behind	14
bare verb want before	15
bare verb wash before	7
bare verb weld before	13
bare verb wipe behind	-7			16
bare verb wire before	19
bare verb wobble before	15
bare verb wouldn't behind	12
bare work imperative before	6
bare work modal before	10
bare work present before	8
bare work present behind	7
before it bought	-5				51
before it need		17
behind it bought	-38				36
beside add				11
beside add G	27			-13
beside add Q	-5			12
beside add a	-9			13
beside add b nobody	10			-16
beside add b other	5			-20
beside add pp nobody	-19	-16		31
beside add pp person	-19	-17	-8	27
beside adjust	24
beside ain't	11
beside ain't is other	11
beside am		-8	18	-18
beside am is person	10
beside anchor	15
beside anchor pp other	15
beside are Q	29			-13
beside are all			4
beside are at	18
beside are down	23			-11
beside are in				13
beside are is person	24
beside are on	-28			35
beside are up	-19	-9		27
beside aren't	19
beside aren't is other	19
beside arrive			16	-25
beside arrive pp other		-5	17	-27
beside ask b nobody	21
beside ask b other		11
beside ask for	-13	26
beside ask pp person	13
beside back	20
beside back pp other	9
beside bag			12	-14
beside bag b other	-6		17
beside balance	-24		15	12
beside balance b other			-21		-9
beside be :	-25	-14	-10	30
beside be G	5			-8
beside be T	14
beside be a	-17	9
beside be at	25	-7
beside be back		20		-12
beside be here	14
beside be in	22
beside be loose	-9			14
beside be my	13
beside be off	10
beside be on	19
beside be out	18
beside be p nobody	31
beside be p person	-5	25
beside be painted shut	7
beside be there	9
beside be under	21
beside be up	15
beside bead	-25	6		24
beside bead b other	-15	11		7
beside bead on	-8	-7		17
beside bed				18
beside bed on	31			-21
beside bed pp other				11
beside bend ,	-4	9
beside bend Q	-17	-15		25
beside bend b other	21
beside bend pp nobody	-10			16
beside bend pp other	-15	22
beside bend pp person	16
beside bend the	16
beside bet	16
beside bet b other	16
beside bleed	5
beside bleed i other	7
beside block	10
beside block pp other	10
beside blow	15
beside blow Q				16
beside blow b other	17
beside blow i other	10
beside blow it	29			-23
beside blow p other				5
beside blow p person	5	-9	-9
beside blow s other	6
beside blow the	20
beside bolt	-4			24
beside bolt down	20
beside bolt pp other	-19			34
beside bolt pp person	34			-29
beside book		6
beside bore	-7	-7	-5	23
beside bore b other		-7		11
beside bore pp other	-6		-9	19
beside borrow		13
beside borrow pp person		11		-18
beside bow	5
beside bow pp other	8
beside box ,	-6	-15		17
beside box :	32	-31		-38
beside box and		15	-18	-18
beside box b nobody	22
beside box b other		9
beside box by	-12	22		-20
beside box in	-13	-8	28
beside box of		8		-15
beside box pp other			8
beside break		8
beside break ,	12
beside break Q	15	-12
beside break in		6
beside break p other				-8
beside break so	-26	10	18	-16
beside break the		12
beside bring	-7	34
beside bring G	-24	28
beside bring Q		22
beside bring a		9
beside bring b nobody	-12	37
beside bring b other		15
beside bring b person		10
beside bring back	-25					30
beside bring i other	14		-10
beside bring i person	-15	29		-8
beside bring it		-18	11
beside bring me	-25	36
beside bring pp other	17	-26	10	-12
beside bring pp person	-47	-38	7	-21		51
beside bubble	6
beside bubble b other	12
beside build				20
beside build b other	25
beside build pp other	-6	-9		16
beside burn				18
beside burn Q	-31	-12		40
beside burn b other	23
beside burn i other	14
beside burn pp other				15
beside burn pp person	-16			26
beside burn up	-19			31
beside bury	9
beside bury Q	7
beside bury in	6
beside bust	9
beside bust pp other	9
beside butter	-10	18
beside butter b other	-10	18
beside button				14
beside button pp other		-4	-5	15
beside button up				14
beside buy					12
beside buy :	-16	36	-5	-5
beside buy G	11		-8
beside buy a	-16	-9		-16	16	12
beside buy b nobody		38
beside buy b other		19
beside buy b person	-23			-8	47
beside buy i nobody		18	-20	-31	-7
beside buy i person		17
beside buy pp nobody		-29			34
beside buy pp other	-43			-17	29	25
beside buy pp person	-10	-14			39
beside buzz				12
beside call G	-4	-4		15
beside call Q	17
beside call about	14
beside call b nobody	-5	13
beside call b person	8
beside call for		9
beside call him	17
beside call i person	13
beside call it		20		-11
beside call me	13
beside call pp other				13
beside call pp person	11
beside call s other		9
beside call them	6
beside can on	25			-16
beside can pull	6
beside can will other				11
beside can't	11
beside can't will person	8
beside cap	-11			28
beside cap pp other	-24	-15		34
beside cap pp person	27			-8
beside carry	14
beside carry b person	9
beside catch	10
beside catch pp other	5
beside catch s other	10
beside catch the	7
beside caulk				4
beside caulk pp other	-7			15
beside caulk pp person	14
beside change				24
beside change Q			-15	4
beside change b other	12			-20
beside change b person	-15			38
beside change her	-8		19
beside change it	7		17	-37
beside change pp nobody	-21			34
beside change pp person	-6			12
beside change that	20
beside change the				25
beside change their	21
beside charge	18
beside charge b other	16
beside check			5
beside check b other			5
beside check b person	6
beside check it	15
beside check pp nobody	16
beside check pp other	-10	-8	19	-16
beside check s other	24
beside check the	6
beside check with	12
beside chew				7
beside chew pp other				7
beside chip Q	21
beside chip b other	7
beside chip on	19
beside chip pp other	30
beside chip s other	-24			29
beside chip the	8
beside choose	10
beside clad	9	-17	-17	7
beside clad pp other	9	-17	-17	7
beside clamp				9
beside clamp pp other				15
beside clean	6
beside clean G	15
beside clean b other	9
beside clean b person	13
beside clean it	-12			23
beside clean pp nobody	13
beside clean pp other	-11			23
beside clean pp person	34			-20
beside clean the	14
beside clean through	14
beside clean with	17
beside clear and	-24	5	17
beside clear pp other	19
beside clear s other	17
beside clear the	18
beside clear to	4
beside clip	6
beside clip pp other				6
beside clip the	12
beside clog	14
beside clog pp other	7
beside close	4
beside close b other	24
beside close b person	26
beside close pp person				6
beside close up		6
beside close with	5
beside come ,	13	-25	24	-35
beside come Q		-8	9
beside come T		-12	-13		33
beside come back	-13	33
beside come bp person	-8
beside come down			-12
beside come for	-14		22	-17
beside come from	9
beside come home	-17	-14	-23	-9	27
beside come i person	27
beside come in			23	-18
beside come on	5
beside come out	6
beside come s other					21
beside come s person	5
beside come the					9
beside come till	-18	-6	23	-6
beside come to	-30	-11	-14	40
beside come up	23
beside come with	38	-5
beside come without	-16	22
beside complete	-10			14		6
beside complete b other						11
beside complete the	22
beside consum		-18	-22	31
beside consum :		-16	-19	26
beside consum pp nobody		-16	-19	26
beside cope	17
beside could	14
beside count	-7		19	-13
beside count Q	-11		21	-14
beside count b person		5
beside count pp person			17	-10
beside cover	20
beside cover b other	26
beside cover b person	16
beside cover on	10
beside cover s other			9
beside cover with	13
beside crack ,	20
beside crack again	5
beside crack at	6
beside crack corner	8
beside crack from	9
beside crack in	5
beside crack pp person	-36	15		29
beside crack the	-4	14
beside crook	18
beside crook pp other	18
beside crush	22
beside crush pp other	22
beside cup	14
beside cup pp other	20	-5
beside cure	15
beside cure b other	12
beside cut	8
beside cut ,	24	-7	-26
beside cut G				4
beside cut a				16
beside cut at	17
beside cut bpp other	6
beside cut bpp person	14
beside cut i nobody	8
beside cut i other	15
beside cut in				13
beside cut s other	22			-7
beside cut that	30			-12
beside cut the	25
beside cut through	13
beside cut to	31
beside date	24			-11
beside date Q	21			-12
beside deliver	-25	-21	25
beside deliver pp other	-16	-24	17
beside demo	12
beside demo b other	5
beside dent	20
beside dial	15
beside dial pp other	11
beside didn't	9
beside didn't will other	10
beside die	8
beside die b nobody	8
beside dig	12
beside dig Q	13
beside dig it	-9	19		-5
beside dig pp other	40
beside dig pp person	7
beside ding	18
beside ding pp other	10
beside ding pp person	12
beside ding the	12
beside do ,			-8
beside do :	28
beside do Q	-13	-24		32
beside do T	-11	-36	-27	-39	-9	38
beside do a	-5	13
beside do all	25			-5
beside do and				-7		9
beside do i other	-7	18
beside do i person			8
beside do it		19
beside do on				9
beside do s other		5
beside do the	20
beside do with	-25	23		6
beside don't	13
beside don't trust	5
beside don't will other	15
beside doubl	25			-14
beside doubl pp other	23			-15
beside draw	13	-9
beside draw p person				9
beside drill Q	17
beside drill out	-28			33
beside drill pp nobody				15
beside drill pp other	20
beside drip G	23
beside drip b nobody	10
beside drip b other	20
beside drip from	25
beside drip i other				7
beside drive Q		-4		15
beside drive p other				-7	17
beside drive p person	-10			24
beside drop Q	-13	-5	33	-7
beside drop a				11
beside drop off	32			-11
beside drop pp person	-6		7
beside drop the	7
beside dry	10
beside dry ,	7
beside dry as	4
beside dry b nobody	4
beside dry b other	16
beside dry pp other	6
beside dry the	5
beside duct	10
beside duct pp other	9
beside dump	9
beside dump i other	-8			16
beside ease	12
beside eat				20
beside eat Q	-40	-18	-16	49
beside eat a	13
beside eat b other	24			-12
beside eat b person	-13			19
beside eat i other	14
beside eat my	12
beside eat p other	-5	-6		31
beside eat p person	14
beside email	-4			11
beside empty		10		-11
beside empty ,	-12	26	-13	-17
beside empty b other		19		-16
beside face	14
beside fail pp person	15
beside fail the	15
beside feed	-8			17
beside feel	13
beside feel b person	14
beside feel it	12
beside figure		20		-7
beside figure Q	-20	38		-10
beside figure b other	-8	32
beside figure i person	-22	28		-10
beside figure pp person	8	-31	15
beside file	14
beside file b other	6
beside fill and	5
beside fill b nobody			17	-16
beside fill b person	-11			9
beside fill her	10
beside fill it	-5			12
beside fill pp nobody	13	-12
beside fill pp other				16
beside fill pp person	8
beside fill the	17
beside fill with	-11			25
beside find Q	-12	-22	32	-15
beside find a	23
beside find b other		4
beside find b person	-8	13
beside find out	8
beside find pp nobody			27	-10
beside find pp other	30
beside find pp person	27
beside finish ,				19
beside finish G	-19	9	14	-12
beside finish Q	-20	-17	-27	30
beside finish b nobody	-13	-19		14
beside finish b other				12
beside finish b person	6
beside finish i person	7
beside finish pp nobody	14	-14	-6
beside finish pp other	22
beside finish pp person	21
beside finish the	6
beside finish to	10
beside fish	18
beside fit					4
beside fit ,	-22		-6	26
beside fit Q	8	-12
beside fit bpp other	-12				24
beside fit pp nobody	-5	-10		18
beside fit pp other				14
beside fit s other	24
beside fit the	-17				23
beside fix				8
beside fix ,	-8			10
beside fix b other		10		-18
beside fix b person	-22			29
beside fix pp nobody	5
beside fix pp other				20
beside fix that	12
beside fix with	-29			35
beside flash b other				12
beside flash pp other	7
beside flip			5
beside flip pp person	14
beside float		5
beside flush	27
beside flush Q	21	-7		-14
beside flush b other	15
beside flush in	6
beside foam	-17	-9		29
beside forget	-4	19
beside forget Q	23	-12
beside forget b other	-14	21
beside forget b person	23
beside forget the	16
beside fray	25	-7	-12	-21
beside fray pp other	25	-7	-12	-21
beside fre	26
beside fre it	5
beside fre pp nobody	10
beside get G	-20	7	23	-6
beside get about	4	-12	9	-19
beside get all	32			-9
beside get an	-34	28		10
beside get another	14
beside get b nobody	-10	50
beside get b other		44
beside get b person		25
beside get both	-23	-11	29	-20
beside get his	6
beside get i other		22
beside get i person	12		-6
beside get it	47	-13
beside get its				16
beside get maybe	-15		19
beside get me		4
beside get no	-10	22
beside get p nobody	-25	-30	17	-22	38
beside get p person			27
beside get photos	28
beside get plenty	-12		26
beside get s other	12
beside get s person	-6	24
beside get some	-17	29	-11	-11
beside get that	21	-8
beside get to	10
beside give						9
beside give b other		14
beside give b person	-5	-22	-21	8		19
beside give it	37	-29
beside give me	-22			-14	8	8
beside give p other	19
beside give p person	-9	-21		-9	9	10
beside give s other	27	-9		-13
beside give the	14
beside glue Q	13
beside glue down	12
beside glue on				-6		19
beside glue pp nobody	-9			16
beside glue pp other	6
beside glue pp person	-10			12		7
beside glue up				10
beside go ,	-21		14
beside go Q		-23	-11	7
beside go and	-16		8	11
beside go around	22			-7
beside go back	-12	12
beside go down	9
beside go i person	18
beside go off	24
beside go out	22
beside go over	16
beside go p nobody				22
beside go p other				6
beside go s person	7
beside go the	13
beside go through	-19	-4		58
beside go to	16
beside gonna will other	5
beside gotta	8
beside gotta G	4
beside gotta glue	16
beside gotta pull	5
beside gotta will person	5
beside grab Q	-8	10			14
beside grab a	-7	21
beside grab another	5
beside grab b nobody	7
beside grab b other		5
beside grab b person	-11	28
beside grab it	9
beside grind the	8
beside grout	-20	-6		28
beside guess	-5	18
beside guess b other		10
beside guess b person	-8	13
beside hand	18
beside hang				11
beside hang ,		-11		31
beside hang G	39			-13
beside hang Q	-8			27
beside hang and	17
beside hang b nobody	16
beside hang b person				5
beside hang but	20			-14
beside hang by	31
beside hang i other	10
beside hang it	9
beside hang it's				13
beside hang pp other				30
beside hang pp person				23
beside hang s other	31			-15
beside happen	6
beside has Q	6
beside has has person		-11	12
beside has its	20
beside has no	19
beside has the	-4		6
beside has to	9
beside haul	12
beside have ,	-19		25	-8
beside have :	31	-11	-23
beside have G	17	-4
beside have Q			16
beside have about	-15		20
beside have b nobody			53
beside have b other	14
beside have b person			40
beside have her	7
beside have i other	42	-7	-10
beside have i person	-20	15	16	-18
beside have in	21		-5
beside have let go	18
beside have my	12
beside have pp nobody			-7	19
beside have pp other	20
beside have pp person				4
beside have still	-37	-8	35	-9
beside have the	28
beside have to	36
beside he'll	6
beside head		12
beside head s other	-16	23		-9
beside help	20
beside help b other	20
beside hide	17
beside hit bpp nobody				5
beside hit bpp other	4
beside hit bpp person				8
beside hit i other	7
beside hit the	10
beside hold a	4
beside hold em	5
beside hold i other	15
beside hold pp other	8
beside hold s other						10
beside hook					6
beside hook pp other	-9				19
beside hook pp person	5
beside hook up					9
beside hose	18
beside hum	18
beside hum s other	18
beside i'll	7
beside i'll G	9
beside i'll will other	8
beside i've		6		-13
beside i've has nobody	27		-16
beside i've has other	-11	9	9	-16
beside inject	23
beside insert		13
beside install Q				16
beside install pp nobody			-4	8
beside insulate	12
beside insulate pp other	10
beside insulate the	5
beside is G	27			-4
beside is N	25
beside is T	5
beside is all	39			-23
beside is already	18
beside is at	11
beside is black		7
beside is down	-12	-4		26
beside is flat	4
beside is for			16
beside is full	10
beside is good	13
beside is in		-14	12
beside is it	17
beside is loose	22
beside is me	9
beside is no	12
beside is not	18
beside is on				11
beside is only	23
beside is out	19
beside is ready	26			-13
beside is short		6
beside is still	13
beside is the	4
beside is up	-5	-6		32
beside is water	9
beside is wet	17			-5
beside isn't	20
beside isn't is other	20
beside it'll	-18	-8	22	-5
beside it'll will other	-18	-8	22	-5
beside jack		-18	-5	10
beside keep			15
beside keep Q	-14	-18	22	-13
beside keep b person	7
beside keep pp person	-29	-16	34	-21
beside keep the			14
beside kill	14
beside knock b other			13
beside knock it	23		-5
beside knock on	12
beside knock out	-8			14
beside knock pp other	9
beside knock the	8
beside know b other				7
beside know b person	15
beside know the	15
beside label	21
beside land Q	18		-10
beside land b other	-7	12
beside land pp other	-7		14	-10
beside land s other	16		-10
beside lay				5
beside lay a				11
beside lay b other		6	4	-20
beside lay b person	30			-6
beside lay down	-6		-5	15
beside lay i other	23			-5
beside lay in		11	6	-26
beside lay out	22
beside lay pp other	27
beside lay pp person	-9			26
beside leak ,	-16	-10	-14	22
beside leak b other	33
beside leak i other	6
beside leak s other				15
beside lean			10	-13
beside lean a	15
beside lean pp person			14	-16
beside leave ,		-23	22	-10
beside leave :	-30	-24	41	-21
beside leave G	8
beside leave Q	-12		46	-12
beside leave a	10
beside leave and	-9	32	-19
beside leave b other	18
beside leave b person	5
beside leave corner	10
beside leave for	20		-11
beside leave i other	14
beside leave in	28
beside leave me	-11		29	-23
beside leave my	9
beside leave of	19
beside leave on	10
beside leave over	7	-8
beside leave pp nobody		-7	37
beside leave s other	-5		22
beside leave so	16		-18
beside leave that	14
beside leave the	8
beside leave with	-8	-31		15
beside let	6
beside let bpp other	17
beside let in		-17		10
beside level ,	-7			17
beside level b nobody	13
beside level now	20
beside level on	8
beside level pp other	-21			27
beside level within	21
beside lift	6
beside lift ,	12
beside lift pp other	5
beside like G	18
beside like a	15
beside like at	12
beside like b other	12
beside like b person	-5
beside lit	27	-9		-9
beside lit b person	27	-9		-9
beside look	8
beside look and	5
beside look at	9
beside look b other	6
beside look b person	5
beside look pp person	5
beside look s other	4
beside lose	7
beside lose b person	6
beside lose pp other	24	-7
beside lose pp person	-11			16
beside love				12
beside lower	25
beside lower b other	25
beside lower than	19
beside make G	-7	15
beside make Q	39	-10
beside make b other		6
beside make for	18
beside make i person	9
beside make it	-5	23
beside make pp person	11
beside make s other	6
beside mark		12
beside mark pp other	24
beside mark pp person	-16	22
beside mark the	-18	21
beside match Q		15	-9	-8
beside match b other			7
beside match i other	21	-16
beside match the	6
beside measure	5
beside measure Q	25
beside measure bp person	-8
beside measure bpp nobody				5
beside measure bpp other	8
beside measure for	7
beside measure i other	7
beside measure it	-10	15
beside measure pp nobody	14
beside measure s nobody	7
beside measure s person	22
beside measure the	8
beside meet	12
beside meet b other	6
beside meet s other	10
beside meet the	6
beside miss		12
beside miss ,	6			-14
beside miss G		5
beside miss Q		13
beside miss a	44	-13
beside miss b other	-11	21
beside miss b person	-16	23
beside miss behind	-4	14
beside miss from	-19	23
beside miss i nobody		26
beside miss i person	-13	23
beside miss s other	7
beside miss strike	6
beside mitre			-24	-17	23
beside mix Q				11
beside mix pp nobody	-35	10		10
beside mix pp person	14
beside mount				4
beside mount pp other	28
beside mount pp person	-27		-15	30
beside move	10
beside move Q	22
beside move a	12	5	-7	-16
beside move b nobody		11
beside move i person	-4	-7	24
beside move it	9
beside move on	10
beside move p nobody				22
beside move p other				6
beside move pp nobody			32
beside nail	-18		-7	25
beside nail pp other	-8	11
beside nail pp person		-7		15
beside need		21
beside need ,	15	-42	13
beside need :	7		-15
beside need G	-15	34
beside need N		8
beside need T	20
beside need a		4
beside need another	21	-5	-7
beside need b nobody		39
beside need b other		19
beside need b person		23
beside need for			12
beside need i person	-11	37	-12	-29
beside need more	-14	25
beside need pp other	-6		16	-18
beside need pp person	16	-13
beside need qt	-27	33
beside need silicone	21	-9
beside need the			14	-6
beside need those	-14	25		-7
beside need to	24
beside nick	25
beside nick pp other	24
beside nick pp person	9
beside notch	12
beside notch pp other	16
beside notice	12
beside oil b other		18	-7
beside open ,	-11	-11	15
beside open Q		-20	-4	14
beside open b other	20
beside open for		-17	17	-13
beside open it	13
beside open pp nobody	-11	-11	21	-19
beside open pp other		-9		16
beside open pp person			9
beside open s other	18
beside order		20
beside order ,		-8			5
beside order G					24
beside order N		10
beside order Q		12
beside order a	12
beside order b nobody		4
beside order b other		26
beside order b person	-11	17
beside order i person		21		-8
beside order me	-22	26
beside order pp nobody	-5				23
beside order pp other		-8			16
beside order pp person					24
beside order the	-18	27
beside other b nobody		23
beside other i nobody	-16	44		-7
beside other i person		8
beside other p nobody				-6	17	5
beside other pp nobody	-15	-15		-32	30	7
beside other pp person						7
beside other s nobody	30			-13
beside other s other	10
beside owe	-9	33		-5
beside owe b other	-10	22	-9	-7
beside owe her	15
beside owe the	26
beside owe them	-28	14	-20	-19	19
beside own				-4
beside own b other		6		-11
beside pack				11
beside pack b other	-19	19
beside pack it	-5	12
beside pack pp other		-20	-17	15
beside pack pp person				7
beside pack the	12
beside pack with	14	-6	-5
beside paint ,	-6		-6	16
beside paint Q	20			-7
beside paint pp person	20
beside pass				9
beside pass T	17
beside pass b person	-16			26
beside pass pp other	34			-10
beside pass the	8
beside patch Q	18
beside patch by	11
beside patch it		-23	-6	17
beside patch pp nobody	20
beside patch pp other	-7	-11		22
beside patch that	14
beside patch the	13
beside pay	15			-12
beside pay for	8			-15	5
beside peel i other	19
beside phone	19
beside phone b other	10
beside pick					12
beside pick G	15
beside pick Q		4		-10
beside pick b nobody		18
beside pick b other		12
beside pick b person	-11	26
beside pick i person	31	-7
beside pick me	-15	28
beside pick pp nobody	-19	-24		-9	42
beside pick pp person		-16			24
beside pick the	23
beside pick up	-6			-7	35
beside pin	-15	-7		20
beside pin pp other	-15	-7		20
beside pitch Q	6
beside place the	-18			21
beside plan	30	-21	-13	-10
beside plane	23
beside plane b other	6
beside plane b person	15
beside plane pp other	16
beside plug	-12			26
beside plug pp nobody	-12			17
beside plug pp other				14
beside plug pp person				13
beside plumb	6
beside plumb b other	27
beside plumb pp other				6
beside point			5
beside point Q	23
beside point b other	25
beside pok	30
beside polish	18
beside polish the	13
beside pop	18
beside pop b other	12
beside pop the	11
beside pour Q	-8			28
beside pour b other	-9			15
beside pour b person	-15	19
beside pour pp other	15	-9	-8
beside pour pp person				4
beside pour the	28			-7
beside prime Q	6		-6
beside prime b other	24
beside prime b person	18
beside prime it	15
beside prime pp nobody	30			-8
beside prime pp other	-16	5	-7	18
beside prime the	-18		5	17
beside prop	17	-9
beside pull ,	-11	-13		20
beside pull Q				4
beside pull i other	15
beside pull i person	17
beside pull it	29
beside pull out	4
beside pull pp nobody	35
beside pull the	22
beside push	9
beside push a	10
beside push b person	5
beside put				10
beside put Q	-11			15
beside put a	-7			8
beside put all	-9			13
beside put back	35			-20
beside put bpp nobody				34
beside put bpp person				8
beside put down		22
beside put glue		-13		5
beside put i other	24			-7
beside put i person		15		-26
beside put in	-17			36
beside put it	-21	-29		18		14
beside put my	5
beside put new	-11	-27		30
beside put on	-20			27
beside put tape	39			-17
beside put that	30			-4
beside put up	9
beside put with		-13	-11	12
beside quit	9
beside quit bpp other	8
beside quote	33	-5
beside rack	11
beside rack pp other	11
beside raise	27
beside raise b other	25			-9
beside raise the	20			-9
beside rake				8
beside rate	14
beside rate Q	14			-5
beside rate pp other	9
beside read	19
beside read Q	22
beside read bpp other	5
beside read i other	15
beside read s other	13
beside rebuild	-8			26
beside rebuild b person	-6			13
beside rebuild the	-6			13
beside recess	16
beside recess pp nobody	22
beside reckon	-14	32	-18	-18
beside reckon Q	-6	23	-19	-21
beside reckon pp person	25	-9
beside recut	16
beside recut bpp person	16
beside redo	-10	12
beside redo G	-6	18		-19
beside redo b other	33
beside redo in	-9			10
beside redo it	15
beside redo p other		-26	-16	16
beside redo the	28			-13
beside refit		-22	-7	19
beside reglue	32	-15		-15
beside rehang				6
beside rehang pp nobody				11
beside rekey				5
beside rekey pp nobody	-5			10
beside relay				11
beside relay Q	-12			18
beside relay pp other	29			-20
beside remake	-6	5
beside rent	13
beside reorder	-23	26
beside reorder Q	-10	9			5
beside reorder b nobody	-24	29	-5	-10
beside repair	-10			18
beside repair b other	-36			34
beside replace	-17			25
beside replace ,	31			-26
beside replace Q		9	-15
beside replace pp nobody	-17			31
beside replace pp other	-13			18
beside replace pp person	9	-7	-9
beside replace the	-18			29
beside replace with	-18	14
beside require	-29	38		-33
beside require pp other	-33	31	10	-19
beside reroute	6
beside reset				21
beside reset bpp nobody		-17		19
beside reset bpp other				6
beside reset bpp person	-5			11
beside reset it	-11			28
beside reset the	21
beside return						9
beside return Q			-19	-9		11
beside return b nobody		7
beside return b other	28		-6
beside return pp nobody	-38	-23	-28	-25		50
beside return the	-6	-17	8	-10		12
beside return with	-20	15	10	-14
beside reverse	12
beside ring	11
beside ring the	6
beside rip	9
beside rip a		7
beside rip b other	19
beside rip b person			5
beside rip pp other	17
beside rip pp person				5
beside rock		-5	-4	6
beside rock pp other		-6	-6	10
beside rod	29			-12
beside rod epoxy	8
beside rod i person	8
beside rod pp other	22			-8
beside roll Q	5
beside roll b person		-7		14
beside roll it	12
beside roll on	20
beside roll pp other	20
beside roll pp person				4
beside roll the				11
beside roll up	5
beside rough	22			-7
beside rough in	22			-13
beside rough pp person	23			-15
beside rub	11
beside rub i other	8
beside run ,	10
beside run G	-26			32
beside run Q				24
beside run about	12
beside run bp nobody	21
beside run but	14
beside run by	-15	21		-13
beside run down	12
beside run from	8
beside run i nobody	15
beside run i other	30
beside run i person	18
beside run in				7
beside run out				-15
beside run p nobody				17
beside run s other	18
beside run the	32
beside run to	-17			26
beside run up	5
beside run water	21
beside rust	6
beside rust b other	7
beside sag	11
beside sag on	5
beside sand		13
beside sand and		8
beside sand pp other	-20	21
beside sand to				7
beside save			19	-6
beside save pp person	-12		28	-12
beside say G	9
beside say Q	30
beside say T	10
beside say b nobody		10
beside say i other	13
beside say pp nobody	11
beside say pp person	19
beside say so	-13	22		-14
beside scrape	30
beside scrape off	11			-4
beside scrape pp other	27		-18
beside scrape pp person	5
beside scratch b other			9
beside scratch near	10
beside scratch pp other	20
beside scratch the			14
beside screw				18
beside screw Q		-16		11
beside screw a	-12			20
beside screw down	-32	-13	-6	37
beside screw pp nobody	-25			29
beside screw pp person	-24			28
beside screw to		13		-11
beside scribe		26
beside scribe a		13		-11
beside scribe b other	-9	16
beside scribe b person		15		-13
beside scribe pp other	18
beside scribe to	14
beside scuff	16
beside scuff pp other	16
beside seal Q	19			-11
beside seal b other	7
beside seal b person	8
beside seal pp other				17
beside seal pp person				7
beside seal the	7
beside seal with	-38			42
beside see a	11
beside see b nobody	10
beside see daylight	-6	12
beside see if	5
beside see it	21
beside see p person	30
beside see pp nobody	16
beside see pp other	-8		17	-11
beside see pp person	7
beside see s other	23
beside see the	6
beside see you	5
beside send						16
beside send Q	-27	8		-10		20
beside send a		7
beside send b other		10
beside send b person	6
beside send i other	-32	39
beside send i person	10
beside send it	19
beside send me	-11		15
beside send pp nobody	-32		-24	-21	-11	32
beside send pp other	-16	-11	9			17
beside send pp person			4
beside send the	6
beside set ,		-12
beside set G	25			-18
beside set Q				18
beside set a		-7		17
beside set and				8
beside set at				9
beside set bpp nobody				11
beside set bpp other				6
beside set bpp person				4
beside set in	22			-8
beside set it				4
beside set screw	-6	16
beside set the	14
beside set with	-13	-11		20
beside settle	-10	-6		19
beside shave	22
beside shave b other	19
beside shave the	9
beside shim pp other		-10		17
beside shim pp person	23
beside shim the	21
beside ship				-10	8
beside ship pp person	-5		15
beside should	-7			16
beside should will other	-9			17
beside shove	15
beside shove pp person	9
beside show	5
beside show me	21
beside show pp other	16
beside show s other		17		-7
beside show up		16		-5
beside shut	20
beside shut bpp other	16
beside sign	-5		16
beside sign off	7
beside sign pp person	22
beside sign the	-13		21	-6
beside silicone		-5	-7	14
beside silicone pp other	12
beside sister Q	20			-19
beside sister a	-12			29
beside sister b nobody	-18	27
beside sister b other	-6			16
beside sister b person	17			-24
beside sister it	-4
beside sister pp nobody				11
beside sister pp person	8	-14
beside sit Q	10
beside sit T	7
beside sit a	9
beside sit at	19
beside sit flat	-19	27
beside sit i other	9
beside sit on	25
beside sit pp other			9
beside size	13
beside size Q	15
beside size b other	9
beside skim pp person	-5			13
beside skin	16
beside skin over	14
beside slip	31	-8		-7
beside slit	20
beside slit b person	20
beside smell	5
beside smell pp person	5
beside snake	18
beside snake Q	11
beside snake it	11
beside snake pp nobody	11
beside snap				5
beside snap pp other				13
beside snap the	21
beside snug	35			-10
beside snug pp nobody	31			-20
beside snug pp person	6
beside snug the	4
beside soak				8
beside soak it	14
beside soap	6
beside solder	-10	-11		6	18
beside sort the			9
beside sound	12
beside sound b other	10
beside space	10
beside spend	-21	-15	-16	31
beside spill	5
beside spin	26			-5
beside split bpp person				10
beside split right	24	-15
beside split the	13
beside spray	32
beside spray both	32			-19
beside spray pp other	37			-7
beside square and			15
beside squeak by	-5			13
beside squeak s other				13
beside stack				9
beside stack pp other	22
beside stack pp person	-23		5	21
beside stack the			14	-27
beside stain				-10
beside stand Q		12
beside stand i other	9
beside stand s other	10
beside staple		15	-15	-21
beside staple pp other		15	-15	-21
beside start	32
beside start b other	21	-13
beside start b person	11
beside stay			21
beside stay b other			12
beside stay in	20
beside stay s other	11
beside stick Q				7
beside stick a				10
beside stick b other	16			-7
beside stick b person	4
beside stick i other	11
beside stick in	27	-7		-6
beside stick on	6
beside stick pp person				11
beside stop b other	-5	18
beside stop pp other	14
beside stop s other	-12			14
beside straighten			-6	-11	20
beside straighten b other		5
beside straighten that		5
beside strap		-19	-15	17
beside stretch	23
beside stretch pp other	18
beside strip ,	21			-18
beside strip b other		5
beside strip in	-6			14
beside strip of	-6	15
beside strip the	31			-6
beside stuff	-13	28
beside stuff b other	-9	24
beside stuff it	-21	26		-15
beside stuff pp other	11		-8
beside stuff the		-6		8
beside supply Q	20	-5
beside supply b nobody	20
beside supply b other	-8	16
beside swap	-6			17
beside swap ,	-17	-5		20
beside swap G	29			-17
beside swap Q	5		-28	17
beside swap b nobody		12		-15
beside swap b other			10	-40
beside swap b person	-16	26		-27
beside swap for	-28	27
beside swap in	-31			28
beside swap it	-28	-17	22	10
beside swap out	-26			29
beside swap pp nobody			-13	29
beside swap pp other	-20			28
beside swap pp person				17
beside swap that	-16	23		-23
beside swap the		-6		16
beside swap those		18		-22
beside sweat	-25	-13	12		12
beside sweat b other	-27	-14	20
beside swell	5
beside swing		11
beside swing b other	13
beside swing b person	-7	24		-6
beside swing by	-14	26		-13
beside swing s other	9
beside tack	16
beside take G	-10	-7	-5	-31	33
beside take N	-23	13	5	10
beside take Q	-6			34
beside take a	19	-7
beside take b nobody	20	-44	7	-12
beside take back	-31	-31	21	-31		32
beside take i person			7
beside take it	21
beside take me	25
beside take out	38	-14		-23
beside take p nobody	-22		-15			40
beside take p other				24
beside take p person				-24		44
beside take s other	11		-7	-6
beside take that	-26		8			23
beside take the				-7		37
beside talk	8
beside talk b person	6
beside talk to	9
beside tank	14
beside tape all				8
beside tape it	13
beside tape pp nobody		-8	-4	14
beside tape pp person	24
beside tape the	14
beside tear b other	5
beside tear by	5
beside tear near	8
beside tear out	13
beside tell b nobody	16
beside tell b person	6
beside tell her	6
beside tell him		10
beside tell me	15
beside tell pp other	-9	-8		18
beside test	19
beside test Q	16
beside test b other	15
beside test pp other	19
beside test with	8
beside text	15
beside text b other	17
beside they've	-16	-10	23	-17
beside they've has other	-16	-10	23	-17
beside think about	-15		22	-8
beside think b other	7
beside think i person	-5	13
beside think the	6
beside thread		-9		7
beside throw		6
beside throw Q	-7	17
beside throw b other	-10	30
beside throw b person				8
beside throw p person	-8			26
beside tie pp other	15
beside tie pp person				10
beside tie the	10
beside tighten	26
beside tighten pp person	28			-11
beside tighten the	19
beside tile	26
beside tile pp other	25			-11
beside tin	20
beside tin b other	5
beside top ,	14
beside top G	21
beside top and	24
beside top b nobody	20
beside top hinge	-22	29
beside top of				6
beside top to	-11	16
beside torque	15
beside torque pp other	12
beside torque to	15
beside touch i other	4
beside touch that	5
beside trace	15
beside trace it	14
beside trace pp nobody	14
beside treat	4	-6
beside treat pp other		-12
beside trim	30			-9
beside trim pp other	27			-14
beside trip	4
beside try a	-26		23	-18
beside try b other		12
beside try pp person	10	-9	-28	7
beside turn Q	-14	-24		27
beside turn b nobody	21
beside turn b other				9
beside turn b person	7
beside turn out	-9	17
beside turn pp other	13	-7	12	-24
beside turn s other		13
beside turn that	6
beside turn the	20
beside turn up		-5	19	-21
beside undefined has nobody		-22	21	-7
beside undefined has person		-11	11
beside undefined is person	5
beside undefined will nobody	16
beside undefined will person	5
beside undercut	25	-5
beside update	10
beside use				20
beside use ,			29	-21
beside use :	-10	-15	-15	30
beside use G	33			-13
beside use N	-8			18
beside use Q				20
beside use a				10
beside use about		-6		22
beside use b nobody	-30			48
beside use b other	9
beside use b person	-12
beside use pp nobody				34
beside use pp other				29
beside use pp person				24
beside use up	-27	15
beside vacuum	24			-11
beside vacuum pp other	6
beside wait		6
beside wait b nobody		6
beside wait b other	-9	13
beside wait for		18
beside wait i other	-25	10	18
beside wait i person	14
beside wait on	-28	20	12
beside wait s other	21
beside wait the	9
beside wait until	12
beside walk	4
beside walk -	7
beside walk b nobody	21
beside walk b other	10
beside walk b person	13
beside walk it	15
beside walk pp nobody	-9				19
beside walk the	16
beside want G	6	6		-13
beside want Q		4
beside want a		5
beside want another	7
beside want at		9
beside want b nobody	5
beside want b other	32	-12
beside want b person		23
beside want it	31	-13
beside want pp other	-13		20
beside want pp person	8
beside want s nobody	-9	21		-17
beside want s other	10
beside want s person	18
beside want the	45	-10
beside want to	12
beside want water	21	-11
beside wash	5
beside wash b other	8
beside wash it	7
beside wash pp person	12
beside wash the	9
beside wash with	7
beside wasn't	-6	17	-4	-10
beside wasn't is other	-6	17	-4	-10
beside watch	7
beside weep	13
beside weep i other	20
beside weigh				7
beside weigh in	-11			13
beside were	29
beside were Q	21
beside were is other	27			-4
beside were is person	7
beside will glue	-5	13
beside will will other	7
beside wipe pp person	26
beside wipe the	20
beside wire	9
beside wire ,	21
beside wire pp other	7
beside wobble	21
beside wobble s other	21
beside won't	6
beside won't will person	6
beside wont will other	6
beside work	23
beside work bp nobody	21
beside work bpp nobody				29
beside work from	11
beside work i nobody	23
beside work i other	16
beside work on	17
beside work p nobody				24
beside work pp nobody				22
beside work s nobody	-6			14
beside work s person	20
beside wouldn't	7
beside wouldn't will other	6
beside wrap b other	13
beside wrap in				10
beside wrap it				12
beside wrap on	19			-10
beside wrap with			15	-12
beside wrote	18
beside wrote b person	18
bound about			18
bound atMost	14
bound over	21
bound under	5	-4
code	-42	20		25
count after bought far	-9
count after bought here			-4	-18	12
count after bought sentence	-25	-20			25
count after have far		23		-11
count after have here			15	-40
count after have sentence	-4	7	9
count after need here		32		-9
count after need sentence	-4	25
count after none sentence	-5
count after returned far	-28	12	12
count after returned sentence	-26		-30	-32	37	16
count after used far		7
count after used here		-9		14
count after used sentence	-14
count before it ate						6
count before it back	-29					23
count before it bought	-17		-5		38
count before it came	-42		23
count before it have	-21		55
count before it lacks	-26	34
count before it need		34
count before it used				19
count behind it ate		-31				10
count behind it back	-18		16			33
count behind it bought	-62	9		-18	18	33
count behind it came		-15
count behind it have	-5		43
count behind it lacks			-12	11
count behind it need	-9
count behind it used				30
count beside add				10
count beside are	-41			48
count beside arrive	-16		20	-26
count beside ask	16
count beside be	4
count beside bend	-19	27	-24
count beside blow	29			-15
count beside bolt	-15	-11		27
count beside box	-21	27
count beside break	-8		16	-18
count beside bring		12
count beside burn	-29		14	18
count beside buy		21
count beside buy b nobody		21
count beside buy b person	-11	11			6
count beside buy i person		8	-9	-16
count beside buy pp nobody					16
count beside buy pp other	-45			-14	35
count beside buy pp person	-13	-16	-10	-14	34
count beside call	50	-9
count beside can	7	11	-6	-28
count beside change	-19	-34		44
count beside check	-27	-14	34	-28
count beside clean		-15		6
count beside close	10			-13
count beside come	-12		7		17
count beside count		-24	20	-12
count beside cover	12			-15
count beside crack	-28	29
count beside date	23			-12
count beside dial	14
count beside dig		11		-15
count beside do	-10		-5			11
count beside drill	11
count beside drip	11			-14
count beside drive	-36	11	-7	24
count beside drop			15	-15
count beside eat	-9	-20	-20	25
count beside figure	-19	13	12	-8
count beside find	-19	10	11
count beside finish	7	-36		6
count beside fit	-19		-12	25
count beside fix			-13	9
count beside forget	-14	19
count beside give	-19	-10		-34	14	31
count beside glue	-11	-7		17		6
count beside go	-21			17
count beside grab	12	-12			8
count beside hang	-15			42
count beside has	5		-34
count beside have			12
count beside have b nobody	-19		39
count beside have b other	20		-16	-5
count beside have b person	-7		37	-5
count beside have pp nobody	-10	-7	-11	22
count beside have pp other	35	-23		-18
count beside have pp person	-6		-11	19
count beside head	-26	24	-5
count beside hit				6
count beside hold	-32	19				11
count beside install		-13	-10	11
count beside lay	-23	-14	-16	30
count beside leave	-19	-15	49	-11
count beside like		16	-7
count beside make		9		-11
count beside measure	25
count beside measure b other		5
count beside measure bp other	44	-20	-23	-11
count beside measure bpp person	8
count beside measure i other	12
count beside measure i person		8
count beside measure p other		-37	14
count beside measure pp other				6
count beside measure pp person	13
count beside measure s other					7
count beside miss		20	-20	-19
count beside mount	-4		-17	16
count beside move	14	-38	16	-27
count beside move b other		14		-9
count beside move p other	-22			15
count beside move p person	-21	-9		24
count beside move pp nobody	-28	-24	40	-26
count beside move pp other	-22	-8	44	-12
count beside move pp person				-16
count beside move s other	-26	28		-10
count beside nail	-16	12	-25	13
count beside need		26
count beside need b nobody		29
count beside need b other		12
count beside need b person		33
count beside need pp other	-37	5	31	-17
count beside need pp person		-11	8	-9
count beside need s nobody	30	-17
count beside need s other	19			-14
count beside open	-14	-18	34	-10
count beside order	-4	9		-12	13
count beside other b nobody	-5	42
count beside other b other		30		-6
count beside other b person		12
count beside other i nobody	-30	40		-16
count beside other i other				-26
count beside other i person	-4	24		-22
count beside other p nobody	-34		18	-24	10	18
count beside other p other	-7
count beside other p person		-22		5
count beside other pp nobody	-36		8	-36	15	25
count beside other pp other		-5
count beside other pp person		-28	-25	-13		26
count beside other s other	16	10		-32
count beside paint	20
count beside patch		16		-29
count beside peel				9
count beside pick		8		-11	13
count beside point	22
count beside pour	41		-7	-36
count beside prime		10		-18
count beside pull	44			-16
count beside put	-30			45
count beside read	22
count beside rebuild	-33	-6		38
count beside reckon	-7	25	-23	-22
count beside redo	-5	-26	-23	21
count beside rehang	-20		-6	20
count beside reorder	-28	25	-7	-11	10
count beside replace	-22	13	-20	19
count beside require	-15	32	-32	-29
count beside reset		-20		14
count beside return	20	-21	-16	-9		6
count beside rip	9	-10
count beside roll	31			-10
count beside run	-14			8	5
count beside sag	15
count beside sand		15		-26
count beside say b other	10	-7	7	-7
count beside say b person	-16	8	9	-8
count beside say i person	-9	20	-9	-7
count beside say pp other	32			-12
count beside say pp person	6	-22	9	-7
count beside screw	-37	6	-10	32
count beside see	9		5	-9
count beside see b other	-7	-12	25	-24
count beside send	-27			-26		38
count beside set				13
count beside shim				5
count beside show	18
count beside sister	5			-7
count beside sit	33	-14		-16
count beside split	-29	19	18	-22
count beside spray	37			-21
count beside stand				14
count beside start	31	-21	-4	-6
count beside stick	-26	27
count beside stop	-18	23
count beside strip	35		-6	-32
count beside stuff	-40	43	-10	-25
count beside swap			-13	8
count beside take	-19	-7				12
count beside tear	20			-12
count beside test	18
count beside throw	-20	17	-13
count beside top				9
count beside turn	23
count beside undefined has other	5		-49
count beside undefined is other	-5			8
count beside undefined is person	20			-11
count beside undefined will other	-13		-10	14
count beside undefined will person	5
count beside use	-16			20
count beside use b person	-11	11
count beside use pp nobody	-11		7	13
count beside use pp other	-4			12
count beside use pp person	-15			25
count beside wait	-30	25	18	-28
count beside were	21			-16
count beside work	26			-11
count beside work b nobody				-29
count beside work b other		20
count beside work b person	-17			17
count beside work bp other	-13	-35	-15		21
count beside work bpp nobody	-15			46
count beside work bpp other		8
count beside work bpp person	-13	-13		30
count beside work i nobody	13
count beside work i other		15	-13
count beside work i person		-15	18	-21
count beside work p nobody	-25			26
count beside work p other	21	-20	-13
count beside work p person			-7	4
count beside work pp nobody				33
count beside work pp other				13
count beside work pp person				7
count buy imperative behind		15
count buy modal behind	-8	17
count buy past before	-13	-23	-18	19
count buy past behind	-10	-22	-6	-17	49
count buy present behind	-38	22		-11	13
count cue ate		-16				16
count cue back	-13	-5				50
count cue bought	-38			-27	44
count cue came	-8	-4	10			10
count cue have	-10		75
count cue lacks	-21	14
count cue need		41
count cue used				38
count flawed	18
count have present before	10			-8
count have present behind			31
count kept	-18		54
count left 
	21			-25
count left #	-9	-37		24
count left &	8	-22		12
count left (	-24			19
count left +	-11	18
count left ,	-27			7
count left -	-15	29		-15
count left .	-5			6
count left :	-31		13	26
count left G	-6			9
count left N	27			-18
count left Q	13
count left T	-7		12
count left about			10
count left add		5
count left all		-9		27
count left also	16		-10	-27
count left and	-17	27
count left are	7	10		-31
count left at	61
count left back	-17	-20		-16		28
count left be	34
count left between	37	-12
count left break		15	-11
count left bring		20
count left but	33	-4		-9
count left buy	-43	23			25
count left by	14	4		-31
count left change	-20	-8		35
count left count		-14	19	-14
count left cut	-8			8
count left do	12
count left down	-13	7	-8	9
count left drill	21			-11
count left drive	-7	-13		22
count left em	-39	21		-32	25
count left every	51	-31	-16	-30
count left exam	22
count left figure	-20	29	-5
count left find	10	-8	-9
count left for		21		-32		8
count left from	25			-17
count left get	-21	8
count left go	10	-19
count left grab					16
count left hang	-14	-13	-10	29
count left has		5	-12
count left have			19
count left hold	-13	26
count left i'm	-12	24		-22
count left in		-23	-6	21
count left install	-14	-7		22
count left is			25
count left it	15
count left last	-9	-13	12
count left leave	-24		23	-10
count left like		4	-21
count left make	35	-19
count left maybe	-18	-15	37	-5
count left me	-28	21
count left need		13
count left now	7	-5
count left of	53	-16		-29
count left off	12			-17		10
count left on				15
count left only		-22	13	-10
count left open	10	-14	-22
count left order	-12	16			8
count left other				6
count left out				17
count left over	35
count left paint	22
count left past	21
count left pick		5		-14	-7
count left plus	11	5	-7	-25
count left point	22
count left pull	9	-19	-17	-32		21
count left put	-14	5		14
count left read	16
count left replace	-5	16	-14
count left return	15	-20	-17	-6		7
count left run	12
count left sand	-16	7	15
count left say	14
count left screw	11	-24
count left send	-28			-7		22
count left set	-5		-5	24
count left short	-26	28		-8
count left side	21			-10
count left sister	24	-10		-14
count left so	-60	58	-9	7
count left swap	-30			33
count left take	-37		-39	21	11
count left test	5
count left that's	-45	22		21
count left them	-12	23		-18
count left then	22	-9
count left there's	-24	-27	47
count left those		-12	5
count left through	10
count left throw	-28	20	-15	9
count left to	6	-10	12	-7
count left under	29
count left up	-41	6	-8	19	11
count left use				26
count left wall	26			-14
count left want	4
count left we're	12
count left with	-51			41
count list have	-35		36	-34
count list need	-22	44	-17	-33
count measure imperative behind	28	-19
count measure owed behind	-5		6
count measure past behind	14				7
count measure present before	14			-19
count measure present behind					6
count more	-5	28
count move imperative behind	30	-12
count move owed behind	25	-9
count move past before			19	-20
count move past behind	-10		13
count move present behind	-12	23	-15
count name flawed	-12			7
count named before area	5
count named before finish	-15	4	5
count named before surface	20
count named before tool	11
count named before word	20			-12
count named here area	38	-19		-19
count named here defect	47	-11	-10
count named here finish	-18	22		-17		10
count named here material	-66	8		22
count named here part	-93	11		13
count named here surface	25
count named here tool	-53	36	-11	16
count named here word				8
count nameless	18
count need modal behind		12
count need owed before	22		-25	-15
count need owed behind		9
count need past before	-26		9
count need past behind	14
count need present behind	-24	28		-13
count not ahead		18	-11	-12
count null copula before		20	-19	-4
count null imperative behind		13		-10
count null modal before			-14	5
count null modal behind		24	-26
count null none no	-10
count null owed behind	10
count other copula before	-10
count other imperative behind	-27	72
count other modal before				9
count other modal behind		9		-11
count other owed behind	-29	16	21	-17
count other past before						5
count other past behind	-16	-29
count other present before		12	-8	-22
count other present behind	-10	24
count pointing	-31			35
count right 
		25
count right #	-24	49
count right &		-23		26
count right '	20			-17
count right (	-26	22		-18	15
count right )		-19
count right +	-8	12
count right -	44	-17		-24
count right .	-12
count right /	-35	19		15
count right :	32	-10		-8
count right ;	-27		30
count right @	-35	7			14
count right G	-10		-13		15
count right T	14	-6		-7
count right a	4	9			-15
count right across	24
count right after	36	-8	-7	-17
count right all	-48		17	28
count right already		-6	12	-24
count right and	-21			21
count right are	-21			24
count right at					12
count right be		-12		12
count right because	-28		-28			33
count right before	12
count right behind	-30	-5	36	-18
count right bend	36			-19
count right break	-10		-11	22
count right but	15
count right by		7		-15
count right can	-25	15	17	-19
count right cause	10	8		-12
count right chip	11			-8		11
count right come				-57		23
count right crack	5		-7	-5
count right do	8	9		-36
count right don't				9
count right down	13	-8
count right each		-15	-7	18
count right for	-46	45
count right from		-8		9
count right get	24	-21
count right glue	-34			36
count right go		-12		5
count right good	-41	-27	31	-20	16
count right hang	-18	-7		30
count right has	52		-4	-20
count right have	-4		8
count right i				-12
count right i'll	31	-15		-26
count right i'm		14	-24	-10
count right i've	-8	22	-10	-5
count right in	-11	-36	11	27
count right is	16	-7
count right it	-6		10
count right it's	-23		-7	16	13
count right just	29			-22
count right leave	-19		54
count right lift				8
count right miss	36		-19	-49
count right more	-6	34
count right need	9			-11
count right new	-35	5		16
count right no	-44	46	-14
count right not	27
count right now		-9		13
count right of	-39	46
count right off	14		-22	5
count right oh	-9	21
count right or	42	-36
count right out	-26	-30	-31	50
count right over	-9	-16	17	-27		12
count right place	26
count right pull	-5		16
count right run		18		-41
count right short		35	-15	-37
count right spare	-41	-9	46	-22
count right split	17
count right still			21	-25
count right strip	14	-4
count right that	41		-38
count right the	-7	14
count right then	-11	13
count right there	-15	6	-29		18
count right there's	-22			15
count right they		12	-11	-8	6
count right they're	-19	-29	24		6
count right through	-9	-9		23
count right to				-18		6
count right up	-37		-25	63
count right use	-48			41
count right want	7	-13	15	-31
count right we		-23	19	-28
count right were			-8	-16		25
count right when	15	-8
count right where	-14		26	-6
count right which	30
count right won't	-6	-6	33	-29
count say imperative behind	-6	10
count say modal behind		-18		11
count say past behind					9
count says copula before	-8
count says copula before not				-26
count says imperative behind		46
count says imperative behind not	-6	29		-26
count says modal before		10	-28
count says modal before not	-17	5	6
count says modal behind		25
count says modal behind not		13	-28
count says none no	-10
count says none no not	-6	16		-15
count says owed before	-20	14		-29	18
count says owed behind		8
count says owed behind not	29	-8
count says past before not	-26	-17	7	25
count says past behind				15
count says past behind not	28		-26
count says present before	-15		4
count says present behind	-7
count says present behind not	-13	16
count sized	-48	44
count sold so false	17
count then buy b	-28	53		-44
count then buy pp	-12	-23	-21	7	16
count then have pp	7
count then measure b	-17		-27	29
count then measure bp		13		-27
count then measure i	-26			13
count then measure p	-5	-27				27
count then measure pp	35	-20	-16	-15
count then measure s	38	-12
count then move p		-29	-15	23
count then move pp	-13		37
count then move s		22		-7
count then need b	-29		48	-46
count then need pp	-25	14	21	-19
count then need s	13			-10
count then other bpp	27		-18	-9
count then other i		18		-16
count then other pp				-7		13
count then return b	27		-13	-10
count then say b		9		-8
count then say pp	24	-20
count then say s		11		-14
count then see b		5
count then see pp	8			-14
count then undefined has			8	-21
count then undefined is				8
count then use b	-14	-17		25
count then use pp	-9		15
count then work b	4
count then work bp	30			-21
count then work bpp		-5
count then work i				-12
count then work p	-8	-38		4	11
count then work pp				13
count then work s	-4			12
count use past before	-13			25
count use present behind	-39	-9		40
count verb add behind		4
count verb arrive before			6	-11
count verb balance behind	-29		20	6	-10
count verb be before	-9
count verb bend before		18		-26
count verb box before		-29	-28	15
count verb break behind	-10	15
count verb bring behind	-17	16
count verb burn behind				15
count verb buy behind	-8	33
count verb call behind		8
count verb change behind	-50	-10		48
count verb chip before	12	-10		-19		16
count verb come before			12	-5
count verb come behind		-23	-23	-22	26
count verb count behind	8	-34	12	-15
count verb crack before	7
count verb cut behind			8
count verb do behind		-23		25
count verb don't behind	-10	26	-19
count verb drive behind	-32	10	-6	22
count verb drop behind			11	-11
count verb figure behind	-20	29	-5
count verb find behind	-21		21
count verb finish behind	22	-5
count verb fix behind	8	-18
count verb forget behind	23			-15
count verb get before	-41	26	-41	27
count verb get behind	-7	8
count verb give behind	-27	-9		-28	15	31
count verb glue behind	-13	-10		24
count verb go before	33	-16		-13
count verb gotta behind	12
count verb grab behind	13	-13			7
count verb hang before	-13			20
count verb hang behind	-12			29
count verb have before	5			-8
count verb have behind			21
count verb hit behind	19
count verb i'll behind	-15	31		-21
count verb keep behind	-5	-25	20	-19
count verb lay before	-26	12	-11	19
count verb lay behind	-35	-17	14	24
count verb leave before			21	-18
count verb leave behind			9	-16
count verb make behind	-5		10
count verb measure behind	30
count verb miss behind	-15	27
count verb move behind			12	-27
count verb must behind	20
count verb nail behind	6	-11
count verb need before		11	-23	-14
count verb need behind		30
count verb null before		20	-19	-4
count verb null no	-10
count verb open behind	-14		16
count verb order behind	-5	9			11
count verb paint behind	20
count verb patch behind		15		-20
count verb pick behind	-28	22		-22	28
count verb prime behind	32			-19
count verb pull before			6
count verb pull behind	43			-15
count verb put behind			-16	35
count verb rate behind	17	-5
count verb reckon behind		10	-10	-17
count verb rehang behind	-25	5		19
count verb replace behind	-9	-15	-9	21
count verb run behind	-35	19		27
count verb sand behind	18
count verb screw behind	-6	-11		18
count verb seal behind	37			-34
count verb see behind		12	-6
count verb send behind	-11	-12	-38	-33		39
count verb should behind		-17		15
count verb sister behind		4
count verb sit behind	-5	-21	11
count verb stain before			-10
count verb strap behind	-25		7	18
count verb supposed behind	19
count verb take behind	-33	-11			7	19
count verb tell behind	7	-11
count verb test behind	16
count verb think behind	-29	-9	12		19
count verb throw behind	-20	17	-13
count verb tighten behind				5
count verb turn behind	5
count verb use before	-23			37
count verb want before	-6	-23	14	9
count whole clause	-33			22
count work imperative behind		7		-4
count work modal before	-18	22		-16
count work modal behind				-19
count work owed behind	22			-5
count work past before				36
count work past behind				43
count work present before	-46		23	23
count work present behind		-8	5	8
counter appliances	8
counter insulation	-23		22
counter landscape	4
cue bought					58
cue need		12
first N	-6	32
first air	14
first almond	17
first aluminum				12
first an	-43	43
first anchor	13	6	-7	-11
first another				-5
first any	32
first anything				10
first apt	21
first back wall	13
first backsplash	23
first bath	15
first bay	-6			14
first bed	12
first bedroom	18
first birch	-12		18
first black	35
first block	35
first blue	19
first board			13
first boards	16
first bolt	-7
first bone	17
first both				6
first bottom	19
first bowl	9
first boy	12
first boys	12
first bracket		9
first brass	39
first brown	34	-7
first brush	14
first bye	21
first cab	-9		18
first cap	33
first catch	15
first caulk	48
first cedar	21
first ceiling	11
first center	-10	15
first charcoal	-35	23		22
first circuit	10
first clear	30
first clearance	13
first clip	14
first coat	16
first coffee	24
first cold	7
first color	33	-21
first corner	22
first corners	12
first counter	20
first course	15
first crown			11
first cust	25	-9
first cut out	5
first cutout	9
first daylight	12
first dining	6
first drain	12
first draw	17
first drill	29
first drop	5
first drywall	40
first due	21
first dumpster	26			-6
first edge	23
first edges	11
first eggshell	-15	8	11
first electrical					17
first enough	18
first epoxy		-5		19
first exhaust	13
first existing	5
first fall	5
first fence	26
first final	9
first first	20
first first coat	22
first fit	19
first fix	10
first flash	-7		20
first flat	11
first flip	7
first floor	10
first floors	5
first foam	5
first form	21
first frame	-5	5
first frost	13
first full	6
first gap	18
first gas	19
first glue	8
first gray	-22	10	16
first green	21
first happy	15
first hearth	28
first heater	-15	-6	23	-8
first hello	19
first her	22
first hinge	27
first hip	13
first his	33
first hola	9
first hole	16
first holes	8
first hook	12
first hot	33			-10
first house	24
first inlet	19
first jan	16
first knife	28	-17
first ladder	21
first land	20
first laser	25	-20
first latch	28
first lead	15
first left hand	24
first leg	9
first legs	8
first lh	28	-6
first lift	9
first lime	17
first line	18
first lint	8
first list	13
first listen	6
first lock	19
first lol	14
first lord	7
first luis	27
first lunch	4
first machine	4
first main	11
first maple	23
first merry	20
first mine	20			-11
first miter	7
first moisture	15
first more		6
first morning	9
first mortar	21
first mud		6
first my	23
first nah	12
first nail		5
first neutral	8
first new	-45			34
first niche	-7	15
first nickel	18
first night	20
first no	15
first old	34
first open	23
first orange	25
first oscar	12
first our	-7		19
first ours	6
first overhang	-19			23
first pack					14
first paint	30
first paper	5
first part	27
first permit	9
first pete	13
first photos	26
first pine	23
first pipe		11
first pitch	17
first plate	-24	13		20
first plenty	-22		30
first plug	8
first powder	12
first pressure	6
first pressure's	7
first pump	24
first punch	11
first putty				4
first quiet	25
first rain	18
first ray	29
first rear	22			-4
first red	18
first relay	15
first replacement	-10	26
first report	13
first reveal	8
first rh	19	-6
first rick	13
first rigid	-4			17
first ring	31
first rise	12
first ro	16
first rod	33
first rudy	12
first sand	27
first saw	18
first schluter	-4			18
first screed	11
first screen		10
first screw	11
first seam	21
first seams	15
first seat	-19			29
first second	26
first second coat	20
first set	36	-25	-23	-28
first shim	-4	10
first shingle	11
first shwr	21
first sign	19
first silicone	-11			17
first sir	12
first skip	15
first skirt	35
first slab	13
first slope	12
first small	-27	31
first soft close	29
first some	-17	31
first sorry	19
first spare	-5			15
first spec	8
first splash	-7	14
first splice	19
first stack	7
first stain	17
first stainless	42			-10
first stair	15
first stairs	9
first staple			5
first static	13
first step	8
first straight	14
first strap				5
first strike	27
first stub	12
first supposed	8
first svc	13
first tank	17
first tap	15
first temp				5
first their	29
first this	12
first those	24
first ticket	10
first tile	8
first tony	27	-6
first travelers	21			-10
first trim	30
first truck	21
first upper	17
first van	20
first vent		15
first wall	17
first walls	10
first walnut	32
first warranty	20	-13
first water	13
first waterproof	13
first wax	-24		20
first weather	15
first weatherstrip	32
first white	57	-17
first whoever	23
first wire	10	-7
first wrong	28
first yellow	19
first zone	22
gap  have	14	-21	6	-24
gap  have copula		-15	13	-17
gap  have past	31		-12
gap  need	33
gap  need imperative	46	-44
gap  need none		20	-5	-11
gap  need owed	20	-8
gap  need past	27	-21
gap  need present	30	-19
gap  none modal	36	-27
gap  none none	-11	19
gap  none owed		4
gap  none present	11
gap  used	13
gap  used copula	5
gap  used none	23			-22
gap  used past	18		21	-43
gap ( need	29	-27
gap ) none	-4	17	-12	-7
gap ) none none	-4	17	-12	-7
gap + need	-30	51
gap + need imperative	-15	28
gap + need owed		15
gap + none	38	-10		-18
gap + none none	37	-17		-23
gap + used	-43	-26	-10	55
gap + used none	-49	-25	-15	53
gap + used past				7
gap , and need	-20	33	-4	-14
gap , and need none	-20	33	-4	-14
gap , and none	9	6		-25
gap , and none none	9	6		-25
gap , and used	24	-10
gap , bought	-22	-29	-5	-33	44
gap , bought none	-24	-30	-5	-34	44
gap , have		-32	43	-46
gap , have need	-31	-11	34
gap , have need present	-31	-11	34
gap , have none	-10	-29	48	-48
gap , need		41
gap , need have	-14	19
gap , need have owed	-14	19
gap , need none		38
gap , none none			-14
gap , none past	7			-5
gap , so none	8
gap , so none none	-15	18
gap , used	-16	-18		32
gap , used none	-12	-32		39
gap , used past			14
gap - none	26			-21
gap . have	5
gap . have copula	26
gap . need copula	36
gap . need none owed	-20	31
gap . need past	-8	-7	16
gap . need present	17
gap . need used		11
gap . need used owed		11
gap . none modal	6
gap . none none		-15
gap . none owed	28	-22
gap . none past	22		-6
gap . none present	25
gap . used copula	-16	21
gap . used none		-8				5
gap . used past	10			-12
gap . used present	34
gap : none	-13	-20	13		13
gap : none none	-27	-24	14		17
gap : none past	6			-10
gap ; have	28
gap ; have none	28
gap ; need	-14	23		-19
gap about none	25
gap across none	5
gap and about used	-33	-20	-15	38
gap and bought	-42	-35	-26	-35	56
gap and bought past	-17	-8	-10	-13	28
gap and have	-57	-44	81	-21
gap and have copula	-22	-32	43	-16
gap and have none	-45	-12	47	-13
gap and have past	-10	-11	27	-4
gap and have present	-16	-15	30	-9
gap and it's none	22
gap and it's none copula	22			-5
gap and need	-21	88
gap and need copula		19	-5	-11
gap and need imperative		10
gap and need modal	-28	52
gap and need none	-42	61		-17
gap and need owed	-8	43
gap and need past		10		-21
gap and need present	-12	40
gap and none copula	36			-9
gap and none imperative	-13	22
gap and none modal		10
gap and none none		10
gap and none owed	-35				19
gap and none past	27
gap and none present	7
gap and there's none			-13		9
gap and there's none copula			-13		9
gap and there's used	-15		37	-15
gap and there's used copula	-15		37	-15
gap and used	-22	-22		76
gap and used copula	-26	-9		46
gap and used imperative	-8			16
gap and used none	-37	-27		50
gap and used past				29
gap and used present		-17		10
gap are none	19
gap are none copula	19
gap around used	16			-5
gap around used past	16			-5
gap at bought	14
gap at bought past	14
gap at need	31	-25
gap at none past	9
gap at used	11
gap before need	20	-6
gap before none	6
gap behind none	8
gap behind none past	13
gap but none	20
gap by have	6
gap by need	26	-12
gap by need owed	26	-20
gap by none copula	6
gap by none none	5
gap by none past	13
gap far bought copula	16
gap far bought none			12	-20
gap far bought owed		7
gap far bought past	-11			15
gap far bought present	8
gap far have imperative		14
gap far have modal		20
gap far have owed		24
gap far have past	-6
gap far have present		-7
gap far none imperative		5
gap far none modal		12
gap far returned					18
gap far returned copula					7
gap far returned modal	-5	13
gap far returned none		7
gap far returned owed	-15	24
gap far returned past	-14	-13		-27	37
gap far used copula	8
gap far used owed		13
gap fitted, used	-12			12
gap for have	16
gap for have copula	7
gap for need	45	-9
gap for need none	23
gap for need owed	29	-19
gap for need present	11
gap for none	18
gap for none past	19
gap for used	33			-20
gap from none copula	6
gap from none past	7
gap from used	34		-20	-7
gap get me none	11	-7
gap get me none imperative	11	-7
gap gone. used	26	-4		-5
gap got none	-10		21	-11
gap had none	23		-14
gap had none present	24		-17
gap has none	23
gap has none present	20
gap have none present			6
gap hung, used	10			-15
gap hung, used none		-6	7	-9
gap i cut none				8
gap i cut none past				8
gap i got need	-36		38	-9
gap i got need past	-36		38	-9
gap i got none				-29
gap i got none past				-29
gap i need none	-17	22
gap i need none owed	-17	22
gap i put none	-10			21
gap i put none past	-10			21
gap in and used			6	-10
gap in and used past			6	-10
gap in have	26
gap in have none	12
gap in have past	14
gap in have present	18		-9
gap in need	37	-22
gap in none	8
gap in none imperative		12		-11
gap in none none	31			-11
gap in none present	18
gap in used	29
gap in used copula	13
gap in used past	15
gap in, used	15			-20
gap in, used none	15			-22
gap is none	14
gap is none copula	14
gap it's none	-5	16
gap it's none copula	-5	16
gap left and have	11
gap left have	21		-9
gap left in have	15
gap left in have copula	17
gap left on have	11
gap left. have	22	-7	-10	5
gap left. have none		-14		13
gap like none	12
gap like none none	12
gap line have	25
gap line have none	20	-6
gap line need		5
gap line need none		13
gap line need present	5
gap line none	23
gap line none none	37
gap line none past			6
gap more and need	7
gap near bought		-8
gap near bought copula	6
gap near bought none	21
gap near bought past	14
gap near bought present			11
gap near have		4
gap near have copula		15
gap near have imperative		8
gap near have modal		5
gap near have none		13
gap near have owed	9
gap near have past				-6
gap near need none	-15	53		-21
gap near need owed	7
gap near need present	-8		5
gap near returned	28
gap near returned copula	14
gap near returned past	18
gap near used imperative		10
gap near used modal		18		-7
gap near used owed	10	-6
gap near. bought	16					7
gap near. bought copula	22
gap near. bought none	37	-5		-12
gap near. bought owed		5
gap near. bought past		-5	-16	-19		24
gap near. have imperative	5
gap near. have modal		8
gap near. have none			16	-38
gap near. have present	10
gap near. need copula	8
gap near. need modal	21
gap near. need past						12
gap near. need present						6
gap near. none modal	6
gap near. none owed		26
gap near. none past				4
gap near. returned	-25		25
gap near. returned none	-25	9	22
gap near. used copula	21
gap near. used imperative	5
gap near. used owed	-10		11
gap need have	5
gap need none	19	-12
gap need none owed	19	-12
gap no none	-12	-20	-7	29
gap now none	23			-13
gap now none copula	24			-17
gap of need	36	-27
gap of need imperative	22	-18
gap of need owed	27	-22
gap of none owed		13
gap of none present	-6	-8	17
gap of those and need	-7	26		-9
gap of those and need imperative	-16	23		-6
gap of used	29			-17
gap of used past	26			-17
gap off used	16			-8
gap off used past	13			-8
gap oh and need	27
gap oh and need copula	23
gap ok. none	24	-4		-7
gap on have	14
gap on have none	7
gap on need	27	-13
gap on need imperative	26	-18
gap on none	5
gap on none none	27
gap on used copula	-9			20
gap on used past	31			-5
gap on. used	-4	10
gap on. used none		13		-11
gap or none		6
gap out of none	22
gap out of none past	12
gap out of used	32	-19
gap over none	7
gap plus need	-33	40		-26
gap put none	-13			14
gap put none imperative	-14			15
gap so i need none	-25	27
gap so i need none owed	-25	27
gap so i put none		-15		8
gap so i put none past		-15		8
gap so none none		15	-25
gap so none owed	11
gap so none past	-7		14
gap so none present	20
gap so used		11	-12	-16
gap still on have	9
gap still on have none	10
gap that's none	-16	-27	10	14
gap that's none copula	-16	-27	10	14
gap the need	38	-26
gap the need copula	21	-6	-8
gap then none		11
gap there's need	12	-17	8
gap there's need copula	12	-17	8
gap there's used		-17	25	-21
gap there's used copula		-17	25	-21
gap through none	30			-24
gap through none past	13
gap through used	30			-21
gap to none	31
gap to none copula	15
gap to none none	20
gap to none past	24
gap to used	19
gap to used none	20
gap tomorrow none	6
gap under none	8
gap under none copula	5
gap under used	27			-11
gap under used past	9
gap up none	4
gap up, used	23		-26
gap up, used none				10
gap used, used			27	-19
gap used, used past	-11		20
gap used. used	9			-14
gap used. used none	24
gap where none	9
gap with none copula	43			-14
gap with none none	16
gap with none past	-17			31
gap with none present	7
gap with used			11	-10
gap with used past	13		8	-22
group eachOf		-23	-20	12
group range	24			-11
head 1				7
head 2	14
head 2 x	41	-32
head 2x10	21	-7	-5	-14
head 2x2	-25	7	20	-13
head 2x4		-7		6
head 3	16
head 80 grit			14
head abs	28	-7
head abt	13
head ac	17
head accent wall				10
head access door		5
head access panel	-22	18				11
head acrylic	-4	17		-9
head aerator				6
head aff	28
head afternoon	29
head air	37
head air gap	-5		20	-20
head alarm	-17		22
head allen key	14
head aluminium		11	-10
head aluminum				12
head amps	21		-14	-6
head anchor	-39			36
head anchors	-18			14
head anti tip bracket	-11	20	-9	-15
head anything	17
head apart	18
head apron	18
head arch	17
head architrave				9
head architraves	22
head area	24
head arm	-40	23		27
head away	15
head b	27
head back	7
head back door	21
head back wall	6
head back's	32		-20	-9
head backer rod	-43	36		12
head backing	11	-16		6
head baffles		17	-5	-10
head bag's	22	-18
head bags	23	-5		-20
head ball	26	-5		-7
head ball catches	-20	19	9	-19
head ball valve	-4	9		-8
head ballast	13
head balusters				7
head band	7
head banding	-15	-8	31
head bank	10
head bar			5
head bar top	-8			17
head barn door track	19
head base	14	-11
head base cabinets	27			-15
head base caps	6
head base coat	25			-19
head baseboard	16			-10
head baseboard's	6
head baseboards		18	-11	-15
head basement	17	-5
head basin	24
head basket	-25	16	14
head bath		-8		11
head bath fan	20
head batt	13	-7
head batteries	-18		-6	28
head battery	-36	17		20
head batts		18		-10
head bay window		13
head bays	46	-12		-35
head bead	8	-17	12	-13
head beadboard	8
head beam's	17
head beams	27
head bear	13
head bearing	7
head bearing's		8
head bed				13
head bedroom	4
head bell	18
head belt	-18	17		7
head belt's		11		-8
head belts	-32		19	6
head bench	17
head benchtop	6
head better	24	-11
head bevel	4
head bifold					5
head big	16
head bin	16
head birch		-20	27	-15
head birch ply		11		-10
head bit	46			-22
head bits	27			-4
head black iron				11
head blades			4
head blank	9
head blank plates	-38	41	-20	-23
head bled	14
head bless	9
head blind	-5	20
head blinds				14
head blocking	39
head blocks	-12		6	9
head blower motor's	26			-11
head blue tape		8
head board	-14		19
head board's	11
head boards	-32		11	20
head boiler's	25	-6		-20
head bolt	-4			14
head bolts	-20	15
head bond	-10	17
head bonding primer	-20	16		9
head bondo	-33	-13	20	18
head bone	20
head bookcase	26
head booster	-17	-23				25
head boots	28		-13	-22
head boss	19
head bottle trap	-7	16
head bottom	13
head bout	-27	32		-5
head bowl	21
head bowls	-5			13
head box	12
head boxes	30		-4
head boy	20
head boys	9
head bracket	-12
head bracket's	34	-20
head brackets	-24	7		6
head brads	-34	29
head braided lines	-6		12
head brand	-5			-7	19
head breaker	6	-14
head breakers	-22		-20		15	21
head brick				9
head bricks	8	-11
head bronze		4
head brown	17
head brown coat	5
head brush	27
head brush seal	-11				17
head brush strip	-19	28		-17
head brushes	-39	24	23	-22
head bucket				9
head bug	7
head builders bog	12			-16
head built in	14
head bulb	19			-14
head bulbs	-32	-15	7	13	16
head bumpers	-30	18		8
head burn	22
head burner	16
head bushing	-20	22	8
head butt joint	23
head butt joints	18
head button	8	-11			4
head butyl	-16	-6	9	14
head bye	17
head cabinet door	20		-9
head cabinet doors		-5		14
head cabinet pulls	-19	-13		29
head cabinet screws	-22	8	9
head cabinet's			8
head cabinets	-5		34
head cables	22	-26	-8
head call	17
head calls	20
head cam lock	-27			26
head camera	5
head can lights		-5		8
head cans				8
head cap stones			15	-38
head cap's	24
head capacitor's	-6			14
head caps	13			-10
head carcass	32	-10
head carcasses	11	-32	14
head card	25
head carpet	26
head carpet's	27
head carriage bolts	-32	18		19
head cartridge	-16		9
head case	21
head casing				-14	8
head cast	23
head cat6				13
head cedar	-10	5		7
head ceiling	14
head ceiling fan	-5	-10		-5		21
head ceiling grid	28			-10
head ceiling medallion	33	-13		-11
head ceiling texture			16	-4
head ceiling tile			14	-6
head ceiling white	-14	21	-7
head ceiling's	29
head ceilings	-8	13
head cement	-7	-10	11	5
head cement board		6
head center	25	-7
head centers				7
head centres	33			-10
head ceramic	-8			16
head chain's	21
head chair rail	36			-18
head chairs	16		-4	-30
head chandelier	16
head channel		15		-9
head charcoal	-38	15	-24	18		24
head charge	10
head chase	17
head check valve	-9			17
head check valve's		11		-11
head chime	21
head chimney's	17
head chipboard	8
head chisel	19
head chk	17
head chrome	-18	-27	-27	-20	16	21
head chunk	26
head church	8
head circuit	49
head cistern	11	-5
head clamp	-10			32
head clamps	-24	19
head clean	18			-5
head clean out	18
head clearance	11
head cleat		7		-8
head cleats	-10		14
head clips	-42	18	6	8
head closer's	-11		17
head closers		-11	8
head closet	24
head closet bolts	-35	16	4
head closet doors	23
head closet flange	14
head closet rod			7
head closet shelf	14
head co	24
head coat	17	-8
head coat hooks				10
head coats	37	-16
head cock	-9	19		-12
head code	25	-18
head coffee		10
head coil	40			-24
head cold	22
head columns	21			-10
head coming	16
head company	20
head compressor	19
head compressor's	15
head concrete	6
head condensate line	19
head condenser	-5			12
head conduit strap	23
head construction adhesive					9
head contact cement	-8	20
head contractor bags	-4		9
head coping	21
head copper		-38	-6	36
head corbels	-4	-23		12	12
head cords	18			-7
head corner bead	-20	12		5
head corner boards	-16	14
head corners		-9	16	-20
head counter	25
head countertop	22
head couplings	-21			16
head course	24
head cove base			-7			9
head cover		22
head cover plate		12
head credit	18
head cricket	22	-7
head crown	7
head crown's	33			-14
head cup	-8			16
head curb	18
head curb's	23	-15
head cust	29	-22
head cut	8	-17
head cut out	15
head cutout	22
head cylinder					9
head cylinder's				11
head cylinders	-18	-26	17	-22	24
head darker			12	-7
head day	14
head daylight	28
head deadbolt	-4			13
head dealer	7
head deck mud	4	-7	-31	19
head deck screws	-49	6		35
head deep	53			-12
head dehumidifier	19
head delivery			8
head depth	22
head desk	35
head desks	25	-14
head dia	14
head diamond blade	-39	39	-11	-17
head difference	10
head dime	7
head dining	13
head dirt	27		-15
head disconnect	24
head discs	-40	18	-18	25
head dishwasher	22
head dishwasher's	16
head disposal	22
head ditra			-14	18
head diverter	27			-20
head dogs			14	-11
head done	-7			15
head door casing	21
head door closer	-6	12
head door jamb	12
head door stops		-7		12
head door sweep	-20	4	13
head door's	10
head doorway	8
head double		7
head dowel	-21			32
head downpipe	7
head downspout				14
head downspout elbow	-8		13
head draft	11
head drain	8
head drain line	5
head drain pan		-6		-9	15
head drain's	18
head drains	26
head drawer	23
head drawer boxes	-23		16	-6		19
head drawer front	21			-14
head drawer slides	-8		5	-10		13
head drawers	18
head drawing	22
head drill	21
head drill bit	-6	23	-23	-9
head drip cap	-27	-16	17	15
head drip edge	29	-5		-7
head drip leg's	25
head drop	39
head drop cloths	-13	-9	37
head drop ear	23			-12
head drops	24
head dry	21
head dryer	22
head dryer vent	36
head drywall anchors	-13		17
head drywall screws		9		-6
head drywall's	-25	-14		34
head duct	8
head duct tape		13
head duct's	14
head ducts	31			-19
head due	23
head dumpster	29
head dumpster's		13
head duplex	26
head earliest	16
head edge	18
head edge banding				5
head edge trim	-16	24
head edges	24
head edging	29	-17	-8	-16
head egg shell		-10	20	-21
head eggshell	-39	16				11
head eighth	15
head elastomeric			-6
head elbow	-4	18
head elbows	-41	10		19
head electric	7
head electrical	29	-11	-14	-9
head element	18
head enamel	-6	-30	37
head end	8
head end cap		10
head end caps	-17	8	7
head enough		-15	17	-18
head entry	15
head epoxy				8
head escutcheon		20		-14
head expansion tank	-7	21		-5
head expansion tank's	18	-6
head extender	-6			6
head extenders	-40	46		-12
head extractor	27
head extractor's	5
head face	8
head face frames	29
head factory	14
head fall	29
head falls	20
head fan	41			-4
head fan box	18
head fan's	34
head fans			13	-12
head fascia	23			-8
head faucet						7
head faucet's				20
head fault	23	-18
head feed	10
head fella	21
head felt	9
head field tile's	-16			12
head fill	7	-22
head filler	25	-19
head filler strip	-33	29	7
head fillers	-35	-17	38	-28
head filter			-4	18
head filter's		19		-25
head filters	-17			18
head final	13
head fine	15
head finger	42			-11
head finish			5
head finish coat	17
head finish nails		19		-10
head fire	10
head fire caulk	18	10	-15	-14
head fire door	13
head fire tape	14			-14
head first	7
head first coat	28
head fitting	22	-10
head fittings	-4		17
head fixing	10
head fixture	20
head fixtures	30	-18		-18
head flagstone		-13	9
head flame sensor	18
head flange	30
head flapper	-15		-7	42
head flashing	5
head flashing tape	-23	5		5
head flashing's				5
head flashlight	34			-6
head flats	-21	-20	12	6
head flight	11
head float switch			8
head floor	17
head floor drain	10
head floor guide	6
head floor tile	11	-32	28
head floor's	11
head flow	15
head flue	22
head foam	-23			31
head foam rollers	-31	26		-15	10
head foil tape				16
head footing	20
head footings				-13
head form	22
head forms	12
head four by four		4
head frame	-4	22
head frames		-5	15
head freezer	7
head fridge	9
head frost free	-11			13
head full	14
head furnace filter	-6		11
head fuse	27
head gable	9
head gallon	14
head gap	18
head gap's	10
head gaps	27
head garage door	16
head gary	36
head gas	15
head gas line	13
head gasket	-9			9
head gasket's	-23	30
head gaskets	-32	28	-9	13
head gate	47
head gate latch	-25	33
head gate valve	4		-6	-12
head get	29	-12
head gets	7
head gfci			9	-7
head gfi	22				-4
head glass doors	-21	-5	11	14
head globe	9	19		-32
head gloss	13	-10	8	-16
head glue's				-16
head go	27	-9
head good	17
head grade	12
head grain	23
head granite	19			-8
head graphite	24	-5		-15
head gravel's	-8			15
head gray			13
head green		7
head grey	19	-19	-12
head grid	19
head grille	16
head grinder	6
head grout's		-19	24	-16
head guard	-31	24	-6	10
head guard's	-14	19
head guards	-19	-8		26
head guide	-35	33
head guillotine	18
head gun	-9	14
head gutter	14	-16
head gutters	5	-7		4
head guy	33
head guys	33	-23
head ha	5
head hair	33			-7
head halfway		11		-8
head hall	-16			22
head hammer				5
head handles			5	-33
head handrail	23
head handrail bracket	11
head handrail brackets	5	-19
head handrail's	24
head hands	19	-13		-9
head hang	19
head hanger		-6		13
head hangers				-12
head hangs	16
head happy	25	-17
head hardware		-6	10
head hardwood		-31	35
head hatch	22
head haze	5
head header's	15
head headroom	8
head heads	-21	7		17
head heat	10
head heat mat	29			-14
head heat mat's	30			-10
head heat pump	29
head heat's	10
head heater	8	-5	5
head heating	4
head heating mat		-7		13
head height	19
head height's	31		-8	-13
head hello	11
head hendersons	5
head herringbone	6		10	-14
head hex tile	-19	-26	29	-9
head hickory	-21	-17	20
head hidden clips		-9
head hidden hangers	-26		10	17
head high	55	-12
head higher	12
head hinge screws	-21	19	-6	5
head hit	15
head hiya	20
head hob	5		5	-10
head hold	10
head holds	14
head hole	52
head hole saw	-20	25		-12
head hole's	18
head holes	54
head home	18
head home runs	17
head hood	19	-7
head hood duct	23
head hood filters		5		-10
head hooks		-40	11
head hose bib	32
head hoses	7
head hot mud	30			-13
head hot side	7
head hot side's	6
head house wrap	16
head hrv	20	-7		-6
head humidity	14
head ice and water	-41	-17	-25	46
head ice maker	16
head inside corner	-20	22
head inside corners		18	-9	-24
head insp	15
head inspection	9
head interior doors	-19	-24	-10		25
head island	16
head isolator	15
head itself	16
head j-channel		-16	-6	-16	11	18
head jack	42			-13
head jacks	-22	-18	32	-16
head jam	9
head jamb	19
head jamb's	21			-5
head jambs	20
head jan	-7	18		-10
head jig	41	-22		-19
head job	23
head joint compound	-23		30	-6
head joints	19
head joist	35
head joist hangers	-31	36	-18	-17
head joist tape	-15			21
head joists	24			-6
head junction box	28			-13
head keeps	15
head key	14
head key's	20
head keypad				13
head keys	25	-7
head kick	-21		-5	23
head kick plate	-26	5		22
head kickboard	9
head kid's	20
head kit	-42	43	6
head kitchen				14
head kitchen island	11
head kitchen sink	14
head kits	-38	22	25	-8
head knees				8
head knife	23
head knob	-8				12
head knobs	-30		13	21
head ladder's	23
head lads	8
head lady	7
head lags			-21	15
head laminate		-29		9
head laminate's	-22		18
head landing	21
head laser	21	-12
head latches						9
head lath		-19		20
head laundry box	23
head laundry sink	31			-21
head lav	11
head leaf	34		-20
head leaves	21
head ledger	27
head leds	27
head left hand	-26	31
head leg		5
head leg's	18
head lens		6
head letter	20	-15
head level	10
head leveler	-13	20	-8
head levelling compound	10	12	-7	-26
head lid's	14
head lift	23
head light	51
head light box	10
head light switch	10
head light's	19
head lights	16
head lime				4
head line	10
head line set	5
head line set's	22			-7
head linear drain	28
head linen	5
head liner		7
head lines	19
head lint	22
head lip	15
head list	17
head load	6
head lockbox	-7	-17			23
head locks	28	-14		-34
head lockset		-30	16	-29	5
head log	25		-9
head lol	10
head long	55
head long wall	14
head loo	9
head looks	6
head loop	15
head lord	18
head louver	6	5	-12
head low	34
head lowers	-8			16
head lugs	36	-9		-25
head luis	24
head lunch	23
head lvl		5		-8
head machine	26	-10
head maglock	20
head mailbox	27			-14
head main	10
head man	41	-29
head manifold	35	-16
head mantel	-12					23
head mantel's	28			-13
head maple			-12	-8		10
head marco	12
head mask	15			-8
head mastic	-9			24
head match	11
head matter	12
head max	28
head maximum	18
head mdf		-16		11
head meanwhile	18
head medicine cabinet	20
head melamine	11
head membrane	14
head membrane's		11
head merbau	-26	-5	29	-29
head mesh tape		8
head message	8
head meter	45
head microwave	13
head mill	-10	17
head min	27
head mind	19
head mine	19			-11
head mini split	21
head minimum	11
head mirror	9
head mirror clips	-5	22		-6
head mirror lights	-8	17
head mirrors	-10	-7	-16	22
head miters	25
head mix	-23			20
head mixer	-8	-6	20
head mixing valve	30
head moisture	5
head moisture board		25		-24
head moisture meter	29	-11
head morning	24
head mortar		6
head mortar's	-18	-17	21
head mosaic's	-6		-11	19
head motor					8
head moulding	-14	18
head mrs	15
head mudroom bench	19
head multi-finish	-32	9		12
head myself	26			-13
head nah	10
head nail	38
head nail holes	8
head nail plates	-42	25	9
head nailer		6
head nails	-6	5		9
head name	10
head nameplate	-5	13
head nap	-20	28	-11	-10
head neutral	17
head newel	19
head newel post	5
head newel's	14
head news	14
head niche	27
head nickel	18
head night	27	-8
head nipple	-9	24		-18
head noggin	15	-22		6
head noon		-16	-15	-21		23
head north	10
head nosings	23			-12
head notch	22	-20
head numbers	-9	5	11	-13
head nut				14
head nuts	-10	27		-24
head oak		-26
head oc	10
head ofc	13
head oil primer	6	15	-10	-24
head old	22
head one	18
head one's	23
head ones	40
head only	18
head open	26
head opener	21	-9
head opener's	23
head opening	25
head openings	22			-12
head orange	15
head order	29
head osb	-10	13	-11
head oscar	4
head ours	21
head outlet	54
head outlet covers	8	-41	-23			20
head outlet's	13
head outlets	18
head outside	-28	41		-16
head oven	17
head overflow	11
head overhang	16
head own	25			-13
head p trap				6
head p-trap				15
head packing		-9		12
head pad				4
head pads	-22	13	18	-13
head paint	7
head paint finish	27			-18
head paint's	19
head palings	-14		13
head pallet	13	-14	10	-26
head pan		20
head pan's	13
head pancake	28	-19
head pane		10
head panel's	9	7		-16
head paneling	5
head panelling	26			-11
head panels				10
head panes	9			-23
head pantry	11
head paper	4
head paper tape		20	-22	-18
head parlor	10
head part	30
head part's	14
head particle board	18
head party wall	9
head passed	8
head paste	-7				13
head patch		-11
head patio door				13
head paver	10	-6	5	-24
head pavers			-22	5
head pea gravel	-8			13
head peak	-17	20
head peephole	15
head pencil	32	-10		-5
head pendants	-26			32
head penny round	-6	-24	22	-30		10
head penny rounds	6
head people	5
head pergola	9
head permit	16
head pete	10
head pex	-20	-9		29
head phone	10
head phone's	12
head photocell	-5				18
head photos	26
head piano hinge	-27			26
head picket	-19	-5	-4			23
head pickets	-34			22		21
head picture	26
head piece		-10	14	-7
head pieces		14	-16	-25
head pile	5
head pilot	22
head pin	10
head pin's	-11				17
head pins	-7	34	-9
head pipe's	24			-5
head pipes	37
head pitch	20
head pitches	5
head pivot	24
head place	9
head plank	18	-8
head plank's	11			-5
head planks			19	-20
head plaster	9
head plaster washers	-22	12	-20	16
head plaster's	21
head plasterboard	-11				15
head plastic	26
head plate	-30			15
head plates	-43	14	8
head plenty	40		-29
head plinth	19
head plinths	-12			20
head plug's	21	-6
head plugs	-17
head plus	30	-19		-15
head ply			6	-36
head plywood				-8
head plywood's	-24	6		16
head pocket	10
head pocket door	34			-10
head points	14	-15
head poly	-10			5
head poly sand		21	-11	-16
head polyurethane				8
head pond	31	-7	-12	-13
head pop rivets	-9		-11	9
head popcorn	23			-10
head poplar	-15	-23	10	15
head porcelain				-27	19
head post bases	-12	10	-9	-12	13	16
head post caps	-6		-24	-8		21
head posts		-28		35
head pot	25			-20
head pot filler	24			-5
head prehungs	-11		11	6
head press	12
head pressure	22
head pressure tank	24			-21
head pressure's	-18			22
head price	36	-27
head primed	-11	21
head primer			13
head print	19
head profile		6
head prv	-25	20			13
head pull	29
head pulley	27	-5
head pulls	-18	-13		23		5
head punch	18
head purple board			-20	7
head put	15		-29		17
head putty	-11		15
head pvc	-46	18		39
head quarters	6			-21
head quartz	19
head quiet	25
head quikrete	13	-13		-5
head rack	19
head radiator	31
head radiators	36	-15	-7	-29
head rafter	26
head rafters				8
head rag	22
head railing	15
head rails	-8			9
head rain	17
head rake	7
head ramp		20
head ran	8
head range	25
head range hood	-10		27
head rapid set			12	-17
head ray	28
head rcd	6
head read	10
head ready	17
head rear	16
head receipt	29	-19
head receptacle	-12	-4		28
head receptacles	-17	-19	-4	20	9
head reception desk	16
head red oak	30	-18
head red tape	-6	-18	27	-24
head reducer	-31	25			16
head register	16
head register's	21
head regulator	-11		-12	16
head relay	20
head relief valve		7
head relief valve's	23
head remnant	-14	-29	32
head remote	41
head render	20			-13
head rental	28
head repair kit	-6	21
head replacement	40	-29
head report	19
head return	25
head return's	6
head reveal	18
head reveal's	14
head reveals	15
head rh	27
head rick	7
head ridge vent	27
head right	19
head rigid				18
head rim				10
head rim joist				5
head ring	-53	28		20
head rings	-28	8		25
head rise	37
head riser	38
head riser's	22
head risers	57	-28		-23
head ro	17
head road	7
head rock	18
head rocks	10
head rockwool	-37			29
head rod brackets		-16			18
head rods	-31	4	-10	26
head roll	28	-8	-16	-17
head roller	-8	26		-13
head rollers	8	-14
head room	19
head roots	13
head rosette		-11		-8	20
head rough		8	13		-15
head rough in	15
head round	18
head round's	-10				18
head router	16
head row	13
head rubber	-19	9
head rudy	8
head run	64
head runner	-22	29
head runs	27		-15	-17
head rush	9
head saddle	-5	16
head sage		-15		11
head sample	28	-10
head sand paper		22	-8	-9
head sandpaper	31	-9		-19
head sandstone	22			-5
head sandwich	18
head sash	-8	25
head sash brush		12		-5
head sash cord	-9			12
head sash cord's	11	-13
head sash weights			17	-16
head satin	7	-23	9
head scale	4
head scrap	21
head screed	9
head screen	-6					13
head screen door	11	-18
head screen frames	9		-8
head screen's	23			-7
head screens	-15	20
head screw's				-5
head screwdriver	36
head screws	-7			40
head scribe			9
head scribe molding		-17	21	-13
head seal	-11			15
head sealant	-36	36
head seam	10
head seam's	28
head seams	40			-10
head seat	6
head second	29
head see	8
head self	-18		30	-26
head self leveler	-25			32
head self-leveler	15	-18
head semi	15	-33	18	-15
head semi gloss	-34	7	-21	28
head sensor	-20	13	7
head set	24
head shade	12
head sheathing	13
head sheet	-12	-4			23
head sheet rock	-7	-8	5	-11	16
head sheet vinyl	25
head sheets	-28			32
head shelf	16
head shelf bracket	-20	28
head shelf brackets	-15	21	-21	6
head shelf pins	-10			14
head shellac	-27	32
head shellac primer	-5		16	-9
head shelves				18
head shelving	13
head shim	5			-5
head shims	-65	21		24
head shingles	24			-26
head shld	20
head shoes	26
head shop	19	-7
head shop vac	14
head shower	27
head shower arm	17
head shower glass					16
head shower pan	22
head shower tray	-6			13
head shower walls	20			-8
head shower's	4
head shows	18
head shut off	30	-6
head shutoff		5
head shutters		-7		9
head side	21
head side's	8
head sides	24			-9
head siding		-9
head sign			18	-7
head signs	11
head sill pan	-29	-8	-6	20		18
head sill's	13
head singles	26	-10	-12	-12
head sink	36
head sink base	4
head sink's	18
head sinks		10		-7
head sir	10
head sits	17
head skim	28	-7
head skim coat	12	-6
head skip	24
head skirting	-13
head skirting's	-8	12		4
head slab's	-8					18
head slabs	-11	-21	20	-11		10
head slate			6
head slats	-21	15	-19	16
head slatwall	-6
head sleeve				10
head slide	10
head slider	14
head slider's	12
head slip	26	-22
head sliver	24
head slope	5
head slow	17
head slurry	11
head smoke		5
head smoke alarms	-28	16	-5	16
head smoke detector	12
head snake	14
head soap dish	18			-4
head socket	7
head sockets	-7	-32	10	11
head sod	-13			18
head soffit	35
head soffit vents	36			-19
head soffit's	33	-4
head soft close	22
head solder	16
head somebody's	20	-11
head somewhere	24		-6
head sorry	20
head spacer	-10			18
head spacers	-7			19
head spare keys	-34	10		14
head spec	10
head spindle	26
head spindles	17			-17
head spits		10
head splash block	-17		17
head splice	7
head spline		-14		-13	18
head sponge	-26	32
head spot	16
head spots	41			-30
head spout	-27	38	-8	-10
head spring	28
head spring hinge	-17	-6	23
head spring's	24	-14		-8
head springs		-21		14
head spur	35	-29
head square	33			-5
head stack	30		-4
head stain	33	-12
head stain blocker			-28	13
head stainless	-16	13		10
head stair	11
head stair stringer	24
head stair treads	18
head stairs	11
head stakes	11	-22	-15
head standards				5
head standpipe	20
head stands	6
head staple	5	7		-24
head staples	7	-14
head starts	17
head stat	15
head static	30
head stays	9
head stem	19			-18
head step	23
head steps	23
head sticker	14
head stile	16
head stiles	23
head still	28	-17
head stock	-18		26	-21
head stone	-4	-9		6
head stone's	-6	14
head stones	-7	26	-16
head stools				5
head stop	17
head stops	-34	5	17	5
head store	25
head storm door	-37	7	17	-18		22
head straight	17
head straightedge	12
head strainer	20	5		-25
head strainers	-23			30
head strap				16
head straps	-9	28		-8
head street		4
head stretch	-13			14
head strike	9
head string	23			-4
head stringer	14
head stringers	9	-16
head strings	33	-10		-32	5
head strip	-20		20
head strips				13
head strong	20
head structural screws	-53	33		20
head stub	9
head stub's	10
head stucco	7
head stud	27
head subfloor	10	-4		-8
head subfloor's	31
head subway	-21		9	16
head suction cup	-9	16
head sump	8
head supplies	16
head supply line	-20			-14	23
head supply lines				13
head supply plenum's				-5
head supposed	22
head surround	6
head svc	14
head swab	-10	11
head switch				4
head switches		-14	-16	16
head table saw	19
head tables	34	-15	-15	-22
head tack cloths		32		-32
head tack strip	25
head tack strip's	8
head tag	36			-17
head tail	-10			15
head tailpiece	-22	21	17	-19
head take off	15
head takes					16
head tall	26			-12
head tank		10
head tank's		9
head tap	39
head tapcons	-33	29
head taps	36	-17
head tee	-35			38
head tell	24
head temp	15
head template	18	-4
head tester	-11	23
head thermocouple	-11			13
head thermometer	-22	24
head thick	35			-14
head thin set	7		14	-20
head thing	11
head things	41	-13	-5	-21
head thinner	19		-18
head third	27			-5
head thread	10
head through bolt				6
head thumb	6
head tile adhesive	-12	-16		29
head tile's	26
head tiles	8	-8	8	-13
head timber	18
head time	14
head timer	21
head tint		-17	15	-11
head tip	20
head tip's	-23	25
head toe kick	26
head toe kick's	12
head toggle	-12		17	-7
head toggle bolts	-8		-9	-14	23
head toggles	-52	38		17
head toilet flange	32
head toilet seat				9
head toilet's	19
head tony	29
head top	12
head top edge	5
head top pivot	-14	22
head top's	15
head tops	16			-10
head touch up		5
head towel	21			-30
head towel bar	-38			-18	19	21
head towel bar's	22
head track	24
head track's	19
head traffic	15
head trailer	15
head transformer's	-9	7
head transition			10
head transition's	19		-5
head trap arm	19
head trap's	13
head traps	-30		16	-7		20
head trash pullout	27
head travelers	31			-8
head tray		6
head tread	22
head treated	-4	4	4
head trench	11
head trigger	26			-17
head trim	17
head trim screws	-29	-9		26
head trim's	22
head trims	26
head trowel	31			-18
head truck	24
head truck's	-15	-10		-5	22
head trunk	21
head tub				6
head tub drain	14
head tub surround	25
head tub's	16
head tube				7
head tubes	-17	-7		20
head turn	22
head turns	32			-25
head tv	9
head twice	14
head two	22
head two by four	-41	19		29
head two by six	7
head two by tens	-20	7		15
head two by three		8		-12
head type s		-14	11
head undercoat	-10					19
head underlay	18	-27	-19
head underlayment		-28	12
head undermount clips				10
head union	-11	29		-14
head upper	-7	-11		18
head uprights	24	-6
head upstairs	15	-21	-9	10
head upstand	21			-6
head ute	24
head vac	-10	-8	21
head valve				5
head valve's	25			-5
head van	32
head vanity top	16
head vanity's	16
head vapor barrier		9
head varnish			-10	21
head vein	13
head veneer		20	-8	-23
head vent	5
head vent cover		16		-8
head vent fan	15
head vent pipe	-7		18
head vent stack	28
head vents	10	-15	-17	14
head vinegar	14
head vinyl				5
head vinyl plank	-24		11	6
head vinyl's	31				-17
head wainscot	17
head wait	30
head waits	14
head walk	9
head wall	8
head wall bend	17
head wall cabinets	-7			15
head wall tile	30	-34	10
head wall's	11
head wallpaper		-16	23	-5
head wallpaper's	19		-5	-4
head walls	26
head walnut	-30	11	28	-17
head wants	9
head washer	-38	11		33
head washer box				9
head washer's	16
head washers	-44	41	-18		4
head water	25
head water heater	24
head water heater's	36	-9		-12
head water line	8
head waterproofing	25			-10
head wax	-28		5
head wax ring	-68	-13	45	32
head wax rings	-25		18
head way	14
head wc	22
head weep hole	17
head weep holes	12
head weight		-5	12
head weights	-16	-6		21
head weld	15
head well	5
head wet saw	24	-6
head what's		-10	-19	19
head wheel		17
head whip				11
head white oak	20			-14
head whoever	24
head wide	36
head width	7
head wife	5
head wind	9
head winder	13
head winders	15	9	-33	-16
head window	7
head window stool	19
head window's	14
head windows				6
head winter	12
head wire	10
head wire nuts	-11	-27	-6	35
head wire's	-5	17
head wires	64	-26		-33
head wood filler	-8	17	-22	5
head wood glue	-27	28	-27	-6
head work	8
head works	14
head worktop			16
head wrap	12
head wrench	21			-9
head wrong	-5	17		-5
head xfmr	-7	8
head yellow	8
head yet	21	-4
joined and none				5
joined comma modal	14
joined start none	14
joined start owed		10
joined start present	20
kept			25
last cue bought other		16
last cue bought same	-10				34
last use buy imperative same		7
last use buy owed same		-14	14	-12
last use buy past same				-13	18
last use buy present other		14	-8	-5
last use buy present same	20	-22	-9	-14	9
last use have imperative same		13
last use have owed same	13
last use have past same	-20			24
last use measure imperative other		16
last use measure imperative same			11
last use measure modal other	-14		25
last use measure owed other	6
last use measure owed same				-5
last use measure past other	-22			29
last use measure present other			5
last use move imperative other				-9
last use move imperative same	12
last use move modal same	30
last use move owed same			-8
last use move past other	10
last use need modal other	20
last use need modal same	-10	17	14	-16
last use need owed other	7
last use need past other	20
last use need past same			6
last use need present other		14	-14	-11
last use null imperative other	17		-9	-12
last use null imperative same	10
last use null present same	-5	15
last use other imperative other			9
last use other owed same		31
last use other present other	6
last use return past other	27
last use say modal same	-4
last use say owed same	25
last use say present other			15
last use see imperative other		-9	8	-9	11
last use see modal other	26
last use see modal same	20
last use see owed same	17
last use see past same			9
last use see present other			15	-15
last use use imperative other	-20					24
last use use imperative same	12	-19
last use use modal same	21
last use use past same	-8		12
last use use present other	9
last use use present same			6
last use work owed other		9		-14
last verb add same	-11	-23	9	15
last verb adjust other	25
last verb adjust same	21
last verb arrive other	25	-6
last verb arrive same		-27	18	-20
last verb ask same	52	-5
last verb bed same	21
last verb bend other						12
last verb block same				10
last verb blow other	14			-18
last verb blow same		16
last verb bolt same	-5	-28		5	18
last verb bore same	23			-15
last verb borrow same		17		-12
last verb bow same	20			-12
last verb box same	-5			14
last verb break same	-18	15
last verb bring other	7
last verb bring same	11
last verb bubble same	5
last verb build other	20
last verb build same	-5			8
last verb burn other	-32	-12	-6	32
last verb buy other	18
last verb buy same				-10
last verb call other				6
last verb call same	-24		6
last verb can't same	23	-8
last verb cap other			6
last verb cap same	21	-11
last verb catch same	30			-5
last verb caulk other	24
last verb caulk same	16
last verb change other	-6	25		-7
last verb change same		-6
last verb charge other		-6			12
last verb chase same	-7
last verb chuck same	-11		18
last verb clamp other		-30	-11	13
last verb clean other	30			-5
last verb clean same						7
last verb clear other	18
last verb clear same	41			-22
last verb clip same	42	-22	-9	-30
last verb close other	11
last verb close same			12
last verb coat same	-12			18
last verb come other	14
last verb consum same	-10	-16		22
last verb core same	-21			34
last verb could same				7
last verb count same		7
last verb cover same	12			-12
last verb crack other		8		-10
last verb crack same	-13
last verb crush same		6		-22
last verb cup same		-15		10
last verb cure same	-28	21	-7	14
last verb cut other	10
last verb decide same	12
last verb deliver other	22
last verb deliver same		-11		7
last verb dial same	11
last verb didn't same	-6	9
last verb die same	21	-6		-7
last verb dig other	14		-8	-23
last verb dig same	-5			22
last verb doesn't same	33			-26
last verb don't same					7
last verb drain same	7
last verb draw same	13
last verb drill other			7
last verb drill same		-17		16
last verb drip other	-18	6		11
last verb drip same				7
last verb drop same	11
last verb dry same	12			-7
last verb dump same		9
last verb eat same	18
last verb email same	-7			13
last verb empty same	19			-9
last verb end same	7
last verb exchange other	18
last verb fail same	33	-22
last verb feather same		17
last verb feed same	-9			17
last verb feel other	15
last verb feel same	13
last verb figure same			18
last verb file same	-20			20
last verb fill other	-17	5	13
last verb fill same	23
last verb find other	-35	-10	15		27
last verb finish other				14
last verb fire same	-11	19
last verb fit same				9
last verb fix same	-6			27
last verb flash other	8
last verb flash same	5
last verb flip other	-12	19
last verb flip same	16
last verb float other	10	9	-29	-8
last verb float same	-27	8	16
last verb flush other	8
last verb flush same		7
last verb foam other	-19	20
last verb forget same	19	-10
last verb frame same	-15	17
last verb fre same	21
last verb freeze same	-5		15	-26
last verb give other		-8		8
last verb give same					9
last verb glue other	16	-13
last verb gonna same	8
last verb gotta same		10
last verb grab other	15
last verb grab same					9
last verb grout same				12
last verb guess same	7
last verb hack same		17		-22
last verb hand same	-25			16		20
last verb hang same				12
last verb haul same	8
last verb haze same				13
last verb he'll same	21			-6
last verb head same		10
last verb hear same	-12	11
last verb help same	14
last verb hide same	16
last verb hit same	7
last verb hold other				6
last verb hose same	15
last verb hum same						18
last verb install other		13
last verb install same	-6	-15		-16	22
last verb insulate same	-11		-12	20
last verb it'll same	-13	27	-8	-23
last verb jack same	-8			12
last verb keep other	20			-4
last verb kick same	25
last verb knock same				8
last verb land other	15			-16
last verb land same			6
last verb latch same	7
last verb laugh same		7		-18
last verb lay other	-6		17
last verb leak same		-11		10
last verb lean same	17
last verb learn same	28			-19
last verb let other	-14	-12	23	-19
last verb levell same	6
last verb lift same	9
last verb like same	-13	18		-7	6
last verb listen same	13			-9
last verb live other	28			-13
last verb lock same				7
last verb look other				-8	9
last verb look same	19
last verb love same	17
last verb lower same	10
last verb make other			12
last verb mark same	-14	27		-12
last verb match same	-18	-5	21
last verb measure other	-36	11		24
last verb measure same	40
last verb meter same	30			-11
last verb miss same	21
last verb miter same	27			-7
last verb mitre same	19	-7
last verb mount other	27		-5	-6
last verb move other	-14	18
last verb move same	23
last verb must same	7
last verb need other	15
last verb need same		20
last verb nick same	-11	-4		17
last verb notch same	36			-5
last verb notice same	20
last verb open other	-9			13
last verb open same	5
last verb owe same	-9	26
last verb own same	17
last verb pack other	13
last verb pack same	7	-21		8
last verb paint same		-4
last verb pass other	12
last verb pass same	-10		-9		20
last verb patch other	-14	6	11
last verb peel same		-5	6
last verb phone same		8		-6
last verb pin other	16
last verb pitch same		7
last verb place other	17
last verb place same				9
last verb plane other	19	-10		-5
last verb plane same	22
last verb plug other	-13	-12	24	-13
last verb plug same	-17			9
last verb plumb same				6
last verb point same	-18	-11	5	22
last verb polish other	15
last verb polish same		7
last verb pop same	21			-27
last verb pour same	-44	12				21
last verb prime other	13
last verb prime same			14	-5
last verb promise other	-8	-8	24	-9
last verb prop same	10
last verb pull other	-9			9
last verb pump other		8
last verb pump same	11
last verb push same	7		-5
last verb rack other	33	-5	-6	-9
last verb raise other	-19	22
last verb raise same	13
last verb rake same	-5	7
last verb rate other	9	-11	-12
last verb rate same	29	-6		-5
last verb rather same	22
last verb rattle same	-14	22		-5
last verb reach same	-8	15
last verb read other	-29		25	-7
last verb reckon same	-13	28	-16	-20
last verb recut same			9
last verb redo other	18
last verb redo same	-8		14
last verb refasten other	20			-5
last verb refit same	-11			11
last verb reglue same	21			-10
last verb rehang other	27
last verb rehang same	14	-8		-4
last verb remake same	23			-9
last verb rent same	16
last verb repair same	-10	13
last verb replace other	-16	30
last verb replace same	-28		17	5
last verb require other	17
last verb require same		29	-40	-29	-9
last verb reroute same	14
last verb reset other	19
last verb reset same	13
last verb return other	-16	-5	21
last verb return same		6
last verb reverse same		4
last verb ring same		-6	-11	17
last verb rip same	23
last verb rod same	24	-11		-5
last verb roll other	13
last verb roll same	10
last verb rough same	10
last verb rub same				9
last verb rust same	-34	-8		36
last verb sag same		5		-11
last verb sand other	8
last verb say other			5
last verb say same	8
last verb scrape other		10
last verb scrape same	6
last verb scratch same	15
last verb screw other	22
last verb scribe other	9
last verb seal other	8
last verb seal same	18
last verb see other	10
last verb send other			14
last verb send same	14
last verb set other		-8		9
last verb set same	-6
last verb settle same				12
last verb shift other	12
last verb shim same				11
last verb ship same	20	-10
last verb short same	31	-18		-9	-8
last verb should other		-12	15	-11
last verb should same	15
last verb show same		18
last verb shut same		8		-6
last verb silicone same			-5
last verb sister other	22
last verb sister same	10
last verb sit other	-12		7	4
last verb size same	-9	20
last verb skim same	8
last verb slid same	21
last verb slide same		-10		4
last verb slit same			10	-13
last verb slot same	20
last verb smell same	20
last verb smooth same	-20	-18		26
last verb snake same		13
last verb snap other	10
last verb snap same		6
last verb snug same	-4	15		-6
last verb sold same	-10		18
last verb sort other						5
last verb speak same	25			-16
last verb spend other		12
last verb spend same				10
last verb splice other	16			-20
last verb split same	-18	25		-7
last verb spray same	31
last verb square same	12			-4
last verb squeak same	-4
last verb stack same	8
last verb stagger same				9
last verb stain same	6
last verb stand same			9
last verb start other		6		-7
last verb stay same			9
last verb stick other		9
last verb stop other	-14	10
last verb stop same	-6				10
last verb straighten same	-10		-11	-17	23
last verb strap other	12
last verb strap same	30	-6
last verb stretch same		-16		6
last verb strip other	-14			19
last verb stuff same				10
last verb supposed other	23
last verb swap same	12
last verb swear same		-16			17
last verb sweat same	30		-13	-19
last verb tag other	13
last verb take other	9			-5
last verb tap same	23
last verb tape same	18
last verb tear same	33
last verb tell other	-4				15
last verb template other	11
last verb test same				21
last verb text same	-6			15
last verb they'll same				5
last verb think other			-7	7
last verb think same	-4
last verb thread same	-15		26
last verb throw other	5
last verb throw same				6
last verb tie same		-9		-10	15
last verb tighten same				7
last verb tile other	8
last verb tile same	-8	20
last verb top same	12
last verb touch other	-6	17
last verb touch same	12
last verb trace same		-7		6
last verb trim other		12
last verb trim same				17
last verb trip other	8
last verb trip same		19
last verb try same	16		-18
last verb turn other	16			-6
last verb turn same	26			-7
last verb use same			10
last verb vacuum other	7
last verb vacuum same	33			-11
last verb wait other	16
last verb wait same	-10	11	6
last verb walk same	25			-4
last verb wanna same	-17				13
last verb want other				-5
last verb wax same	-6			16
last verb weep same		15
last verb wipe same	19
last verb wobble same	7	-7
last verb work same	26			-7
last verb would same	6
last verb wrap same		-25	9
last verb wrote same	-14			24
left 
	18
left 
 *			16
left 
 ☐	-17	21		-7
left !	-5	-7		16
left ! !	-5	-7		16
left # G	26			-16
left # N		12
left # all	22
left # alright	9
left # attic	10
left # bath	5
left # closet	6
left # deck	22
left # dining room	10
left # do	23
left # for	15
left # get	-4	-9	-27		33
left # guest bath	6
left # hall bath			10
left # have	16
left # hi	7
left # need	-8	15
left # ok	14
left # pantry	16
left # replace	-12			19
left # run				7
left # so	28
left # take	29
left # well	20
left # yeah	11
left &	-5			5
left '	10
left (	-10
left ) 
	-5		13
left ) ,	-5	-5	18	-43	8
left ) .	29
left *			16
left +	-10
left , G	-16			21
left , N	18
left , Q			6	-5
left , about		4
left , all				5
left , and		29		-15
left , bring	18	-8
left , but		5
left , buy	-36	35
left , cut			-12
left , for	18
left , get	-42	45
left , have	-13	-9		13
left , is				7
left , it's	19
left , need		8
left , now	30			-14
left , only	21
left , order					14
left , pull	14
left , put	4
left , run	28			-15
left , take		-6		17
left , that's	-12	19	-15		-13
left , the		-23	21
left , then	20
left , use	12
left , want	8
left - get	-23	33
left - need	-14	25
left . G	39			-17
left . N	17
left . Q	22			-5
left . T	11
left . add	4	-12		9
left . all	-35	-12	-12	40
left . also		18	-13	-9
left . and		21	-22	-21
left . bedroom	6
left . bring	-11	14
left . but	11
left . buy		26		-10
left . cut	-24	20		4
left . find				12
left . for	21
left . get	-48	20	19	-34	6
left . grab	11	-10		-8	13
left . hall						5
left . have	-28		58
left . in	22
left . leave			8
left . miss	19			-6
left . mix	-25	-8	-8	30
left . need	-4	35
left . on	19			-8
left . order	-7	42
left . other			12
left . put	-14	-15		29
left . return	-28	-18		-16		32
left . run	5	-6
left . short	-30	46
left . take		-15	-14	-20		27
left . there's	33	-5
left . use	-32			58
left /	22
left 1 /	11
left 5 /	9
left : G	-17	21	-15
left : Q	28		-17
left : use				19
left =	23	-14	-16	-14
left ?	10
left @	28
left G 
	18
left G &	-12	6		10
left G (	14		-15
left G +	-18	20
left G ,	-14
left G -	-25	33	-18	-14
left G :		-5
left G G		-20		15
left G N	23			-7
left G Q	10	26	-21	-20
left G T				11
left G about	31
left G and	-9
left G are	-4	16		-9
left G around	22
left G at	11
left G be	21
left G because	11
left G before	7
left G behind	5
left G but	15
left G cause	12
left G down	-13	-6		22
left G drags on	8
left G for	37
left G from	17
left G hang	10
left G has	26
left G have	39
left G i	5
left G in	15
left G is	40
left G it's	43	-8
left G leave	30		-12
left G like		8
left G miss	9
left G need		9
left G not	14
left G now	7
left G of	29
left G off	22
left G on	16
left G or	29	-12
left G over	6
left G pull	21
left G put	7	-23
left G say		11
left G set	12		-12
left G sit	15
left G so	-24	28
left G take	20	-9	-17	-7
left G that's	-21	-5		16
left G the	37	-17		-10
left G there's	-9	-7	33	-13
left G to	22
left G under	5
left G up	-28	-22	-14	33
left G use	-35			45
left G where	10
left G with	25
left G wouldn't	7
left N )	10
left N ,			-8
left N :				22
left N T	16
left N and	-10	4
left N behind	9
left N by	15
left N for		6		-18
left N get	-22	-20	13	18
left N have	9
left N in	15
left N is	-11				19
left N on	11
left N so		-13		5
left N with				12
left Q 
		17		-7
left Q )	-4	17	-12	-7
left Q -	19			-25
left Q :	-16	-46	23		9
left Q ;	-19	12		9
left Q G	-11	5
left Q Q	34	-11
left Q T	10
left Q above	8
left Q across	7
left Q and		12
left Q at	13
left Q before	10
left Q between	6
left Q but	13
left Q by	22
left Q cause	10
left Q deep	5
left Q for				12
left Q from	10
left Q get	-5	24		-15
left Q have			11
left Q in	19
left Q it's	28	-5
left Q leave			14
left Q now	-11	15
left Q of			12
left Q off	13
left Q on	30
left Q over	30
left Q screw	20	-11
left Q side	15
left Q so	7
left Q then	23
left Q there's			14	-11
left Q through	29			-26
left Q to	30
left Q toward	5
left Q under	20
left Q where	7
left Q with	12
left T ,				-14
left T -	15
left T :			-24	-33		22
left T Q	7	-23	13	-22
left T after	15
left T also	-22	24
left T and	8
left T at	6
left T between	21	-11
left T bring	-4	15
left T for	14
left T if	5
left T in	22
left T it's	26			-6
left T need	-28	35
left T so		6
left T then	13
left T there's	8	6	-7	-7
left T to	16
left T use				25
left T with		14		-8
left [ ]		-5		-7	18
left ]					14
left a		-11		-8	23
left a G		-25		13
left a Q	11
left above	6
left account of	15
left across	22
left across and	29	-7		-15
left add				9
left adjust	6
left again	5
left again ,	4
left again .	32	-21		-9
left again T	-21			26
left again and	-12	18
left again with	-24			35
left against	15
left all				17
left all ,	25	-16		-15
left all Q	10
left all and	-21		25
left all but	37			-25
left all down	20
left all in	-13	-14		20
left all over	4
left along	18
left already		-10
left alright	9
left also		21		-21
left and G	-10	-29	-16		24
left and about	-47	8	-12	35
left and after	9
left and bring	-20	27
left and do		-7		14
left and every	13
left and get	-4	11	-29	-21	17
left and half	-16	7	14	-15
left and hang	-32		19	14
left and have		-5	17	-13
left and i	21
left and i'm		5
left and in	18
left and it	14
left and it's	24
left and on	19			-14
left and order	-37	19		-18	21
left and pull	8
left and screw	9
left and set	-11			19
left and tape	6
left and that's	16	-13
left and the	-7			23
left and there's			8
left and use				13
left are	16
left are in	-5	-5		24
left around	6
left as	26
left ask	23
left ask for		13
left at	15
left at Q				6
left at least		6
left attic	17
left away	13
left b .	29			-17
left b :				10
left back						19
left back ,	37	-10		-12
left back T	10
left back and	19	-8
left back for		5
left back in	-11			-27		21
left back of	20
left back to	31
left back with	-17	18		5
left bad	11
left bag	-16		24
left balcony	13
left bare	14
left basement	18
left bath	20
left bathroom	10
left be Q				15
left be in	21			-6
left be on	17
left because	14
left because there's	19		-7
left bedroom	20
left bedroom 2	13
left bedroom 2 :	9
left before	18
left before T			10
left behind	13
left below	7
left bend				13
left bend ,	-9	11
left beside	19
left between	32
left big	16
left black		9		-5
left block	8
left blow				6
left board ,			10
left board .	25	-5	-12
left boards ,		-28	-8	27
left bolt .	14	-14
left book say	22
left boss	7
left boss ,	5
left both side	13
left bottom	14
left bottom of	21
left box	4
left box ,	-6	-15		17
left box .			13
left box and		20	-19	-19
left box have	-19		27
left box in	-8		16
left br	-6			16
left bracket	-9	-20	21
left break ,	12
left break in	19
left bring		16
left bring back	-25					30
left bring me	-28	39
left burn	-9	-11		27
left burn through	-9			36
left burn up	-8	-9		20
left but	14
left but there's	21
left butter	12
left buy	-23				22
left buy :	-18	35	-11	-5
left by	14
left by Q	27
left by T			10	-8
left c	17
left call	13
left call about	14
left call for	31	-10
left call it	-5	22		-15
left can get	22	-7
left can put	17
left can't get	28	-9
left cap and	8			-18
left catch		9
left caulk	20
left caulk ,		16		-9
left caulk .	22			-8
left caulk at	12
left cause	7
left ceiling	-5			12
left cellar	10
left centres ,		-5		4
left change	-9	6
left charge	8
left check	13
left check with	11
left chip				6
left chip in	4
left chip on	7
left choose	10
left clean	25
left clean with	6
left clear	13
left clear .	-10			16
left clip	-26		11	7
left close	6
left closet			7
left closet :				16
left color	11
left come T	-11	-20	-28	-16	29
left come down				10
left come from	5
left come in			14
left come out	22
left come to	-32	-14	-32	44
left come up	20	-6		-5
left come with	9
left corner ,			-6	5
left corner .	-10		20	-9
left corner of	17
left corner to	7
left count	-14		22	-19
left cover	9
left cover .	16
left cover on	9
left crack	-10			15
left crack from	8
left crack in	4
left cut .	-10		18
left cut in				11
left cut out	17
left cut to	28
left day	15
left day N	5
left dead	15
left dead ,				11
left dead as	17
left deck	-16			20
left deep	5
left deep ,	-22	-13	-11	29
left deep and	-17		13	9
left den	5
left den :	-30	-28	14	21
left dig	19
left dining room	7
left do ,	7		-12
left do .			7
left do :	23
left do and				-17		14
left do on	7
left dog eat	11
left don't trust	6
left down ,		-16		15
left down .	12	6		-9
left down and	17
left down by	8
left down from	23
left down in	24
left down like	20
left down on		-25	-8	19
left down to	-11	-28	54	-40
left down with	24
left drags on	8
left drain	22	-5		-8
left drill	24
left drip	8
left drip on	9
left drive	-4	-10		21
left dry	4
left dry .	35
left dump				7
left each .		-5	-8	13
left eat	-6			30
left either	6
left electrician leave	-7	17
left em	-15	9		-7	13
left em and	15
left em with	7
left empty	12
left end	12
left enough	14
left ensuite				13
left entry	10
left every	6
left everything				6
left exam	22
left except						5
left exterior	10
left extra	26	-21
left family room	8
left feed	8
left fence :	-14	-25	-16	28
left fifth	19
left figure		24	-10	-14
left file	7
left fill	23
left fill .	27
left fill with	-18			36
left finally get	24
left fine	16
left fine ,	22			-10
left fine .	29
left fine but	10
left finish	5
left finish ,	-5			20
left finish .			-37	5
left finish to	7
left first	-18	15
left first .	30		-11
left fit	-14				18
left fit ,	-22		-6	26
left fix	9
left fix ,	-8	6	-8	5
left flash	-8			14
left flash .		13
left flash over	6
left flat ,	25			-20
left flat .	-10	-22	29	-20
left flip	20
left floor			10
left floor ,	-13	-7	16
left floor .	29
left floor :				9
left floor and	31			-4
left floor in	14
left floor is	14
left flush	20
left foam		-13	-7	24
left for about	32		-11	-8
left for it	28	-15
left forget	-4	12
left frame		11
left frame and	16
left from	8
left from the			4
left front	16
left full of	11
left gap .	19
left garage			8
left garage :	-24	12		17
left get	-13
left get Q	15	-12
left get about	-11	-7	24	-11
left get its				12
left get maybe	-6		6
left get me		29
left get to	12
left give	21
left give me	-19	9		-8	12
left glue	7
left glue .	21
left glue and	-9	-11		21
left glue in				6
left go ,	-21	7
left go and			17
left go back			17	-11
left go in				6
left go on	24
left go over	7
left go through	-25			57
left go with	28			-11
left gonna be	-24	11	18	-13
left gonna need	8
left gonna want	-13	29
left good			6
left good .	11
left good to	6
left gotta be	15
left grab	-5	8			5
left grab me	5
left gray and	-34	20	8
left grind				9
left grout	12
left guest bath	7
left guest room	12
left guy of	5
left half	-7		23	-12
left hall	6
left hall :	40			-14
left hall and		10
left hall bath			5
left hallway			8
left hand			9	-9
left hand ,	-36		13		-7
left hand .	-19	17	-10	-21	16
left hang				6
left hang ,		-8		22
left hang .		-13	-10	15
left hang and	26
left hang by	34			-7
left hang on	-14	7		8
left hard	19
left hard as	-5	13
left haul	13
left have ,	-24		27	-11
left have in	21		-5
left have put	-28			35
left he need	-21	28
left he want	20	-8
left he'll want	5
left he's get	-6			-7
left her		-11	14
left here	-25	-11	33	-15
left hi	10
left high and		-11		10
left hinge and				7
left hit	18
left hold .	-16	18
left hole in	7
left hole of	8
left hook up					8
left house	11
left how	12
left i	12
left i break	-8	15
left i bring	-8	-9	9	-14		19
left i buy	-26	-21	-7	-5	45
left i change	-19			35
left i clean	10
left i close	12
left i count	-4	6	9	-16
left i do	12
left i drill	5
left i drive	-25	-7		31
left i figure	31	-20	-23	-13
left i find	10
left i finish	14
left i forget	-18	23
left i get	-26		23
left i glue	14
left i hang	-17			29
left i have	-28		45
left i hold	5
left i lay	-8			18
left i leave			9
left i measure	4
left i mix	7	-5	-5
left i open	30			-18
left i opened up	15
left i order	-18	-10		-6	37
left i pack	26			-5
left i pour	-25			31
left i pull				4
left i put				35
left i run	-8			27
left i say	18
left i set	-13			29
left i sister				10
left i stick	-7			15
left i swap	-27			39
left i take	-17	-15		18		16
left i try		-17	-26	12
left i turn	-13			17
left i use				16
left i wash	11
left i'd like	-34	37
left i'd put	-15	25		-28
left i'll bring	-20	27
left i'll grab	-32	35
left i'll need	-16		18
left i'll put	-6	23		-21
left i'll want	-38	43
left i'm		11		-7
left i'm at	20
left i'm on			11
left i'm outta	11
left i'm short	-28	40	-10	-9
left i've		16	-13	-8
left i've get	-28	-11	59
left i've put	10
left if	14
left in ,		-5		26
left in Q	-5			16
left in T	-11		24	-16
left in about	25		-6	-17
left in all	28	-6	-6	-11
left in but						15
left in for	17
left in from	13
left in it	-15	-17		28
left in like	35	-25		-27
left in the	10			-10
left in there	12
left in there's		-13	-12	16
left in with				-11
left inside		5
left inspector want	16
left install	-10	-5		20
left instead of	19
left insulate	14
left into	26
left is Q	16
left is at	15
left is do				7
left is for			7
left is in			13
left is miss	-15	23
left is on	22
left is only	14
left is send	-14	23
left isn't	13
left it ,	31
left it .			13	-17
left it G			12
left it Q	17
left it about	27			-16
left it at	29
left it be	47
left it but	4
left it by	25	-17
left it have	20		-9
left it hold	26
left it in				12
left it is	16
left it need	8
left it off	16
left it out	-10			18
left it read	4
left it run	30			-5
left it say	19
left it so		12
left it take	-24	-8	-19	29	9
left it there's	-25	-6	28
left it to	35
left it up	18	-10
left it want	19	-7
left it when	8
left it with				32
left it'll take		12		-13
left it's about	32			-9
left it's get			-25	12
left it's in		-5		14
left its G	22		-5
left its last	19
left just need	9			-13
left keep			9
left kitchen ,	41	-20	-7	-36
left kitchen .	22
left knock	8
left l	9
left ladder	6
left land	20
left land ,		-10	21	-18
left last			9
left last of	-23	-8		36
left laundry	18
left laundry room	10
left lay	-10			28
left lay in	-19	10	13	-22
left leak .	17
left least		6
left leave ,		-25	25	-13
left leave .				7
left leave :	-22	-23	33	-25
left leave and	17
left leave in	23
left leave is	-21		26
left leave me	-15		24	-10
left leave of	20		-6
left leave on	10
left leave over			7
left library	16
left lift	9
left lift ,	10
left like	7
left line .	22			-14
left linen closet	19
left listen	7
left little	4
left living room	21
left living room :	-12	-5		24
left long	19
left long and	14
left loose	18
left loose ,	-23			28
left loose in	28		-10
left lose	26
left make	38
left make it		10		-6
left man	10
left mark	15
left master	4
left master bath		9
left match		4
left maybe	-7		35
left maybe Q		15	-7	-15
left me		24
left me Q	19	-15
left me and	10
left me is	28
left me up	-23	32		-6
left meantime	14
left measure	6
left meet	5
left mind	12
left miss		12
left miss ,	5	5	-11	-21
left miss at		5
left miss from	-19	23
left mix		-7	-7	15
left more	14
left more and	7
left more than	6
left move	12
left mud and	16		-7
left mudroom	12
left n	14
left nail	-22			19
left nail .	9
left near	6
left near it	-10	-18	22	-16
left need		24
left need .	12
left need :	12		-18	-10
left need G	-6	12
left need to	20	-5
left never	10
left new	11	-6
left new .		-15		8
left new G	-16		15	6
left new N	15
left news	8
left nice	-17			21
left nick	9
left no	29	-10	-6
left no ,	-12	-24	-17	26
left no have	34		-5
left nos .	34			-17
left not	20
left not in	-5	14		-11
left notch	9
left nothing	-20			23
left notice	18
left now and	-11		6	11
left now is	18	-4
left now it	7
left now with	-5			10
left number N	19
left of G	-9	-4				14
left of Q	24
left of em	-11	15		-5
left of it	29
left of that	-18	-9	24
left of the	31	-17	-16
left of them	24
left off	15
left off ,	13
left off and	11
left off at	7
left off in	30			-10
left off its	6
left off on	10
left off so	4
left off with	20
left office	7
left oh	35
left oil	13
left ok	29
left ok ,		-11		14
left ok .						11
left okay so	23
left old	28	-15	-5	-12
left on	6
left on ,		-19		25
left on G	31	-9		-10
left on N	18
left on T		14		-15
left on all	8	-6
left on and	-7	-9		14		6
left on every	17
left on in	17
left on it	-13
left on the	16		-5	-9
left on with	-32	-18		46
left once	9
left one's	22
left one's get	22		-8	-10
left ones	5			-12
left ones and	-28	-15	-23	16	23
left only			19
left only .	15
left only get	-50	-18	51	-7
left only have	-41			31
left onto	9
left open ,	-13	-13	16
left open is	25
left opened up	15
left or		5
left order	-8	17			8
left order ,		-11			8
left order me	-33	34
left out	13
left out ,	9
left out .	18
left out T	19
left out and	18
left out at	10
left out in	15
left out of	11
left out to	29
left out with	-11	-13			24
left outside	-9	8
left outta	35	-8
left over	21
left over ,	18	-8	-14
left over .	-12	22	-5	-21
left over by	7
left over in	24		-7
left over to	16
left owe		13
left owe them	-28	14	-20	-19	19
left own	19
left owner want	6
left pack				10
left pack with				6
left paint	24
left paint ,	6	-7	14	-25
left paint .	7
left paint and			12
left paint in	-12			16
left pantry	19
left pass				18
left past	23
left patch	23
left peel	-20			30
left pick	15
left pick up	-33	16		-10	40
left place	-13			18
left place .				10
left plate say	-13	22
left please		14	-9
left please .	21
left please get	-22	9	12
left plug	28			-12
left plumb	17
left plus	-5	21
left point	21
left porch	6
left pour				17
left powder room	10
left prime		-16		14
left proud of	9
left pull	7
left pull ,	-15	-14		18
left put				10
left put down		13
left put in	-33			48
left put the	-11		23	-11
left put up	7
left quick	19
left reach	11
left read	10
left ready for	11
left reckon		8		-10
left redo	-6			16
left rehang	24			-15
left reorder	-16	11			11
left replace	-17	6		18
left replace ,	14			-12
left replace .	31			-16
left require		8	-12	-14
left reset				4
left rest	-31	-21	40	-26
left rest of	17
left return	-5			-17		20
left return with	-20	15	10	-14
left right		9
left right down	20
left right so	13
left right through	5
left ring	10
left rip	10
left rise is	22
left rm :				12
left roll	17
left roof	-21			24
left room	7
left round	9
left round .				18
left rub	9
left run ,	9
left run .	11			-11
left run Q	-13			17
left run but	14
left run in	18
left run is	29			-9
left run to	20
left s	7
left sag on	6
left salon				6
left sand	-10	6
left sand ,		10		-25
left say	4
left say Q	8
left scrape	5
left scratch			15
left screw				7
left screw ,				11
left screw in	-18	15
left screw to	24
left scribe	26
left scribe to	12
left seal	22
left seal .	18
left second	10
left second coat of	14
left see if	4
left send	-9	7				7
left send is			14
left send me	-11		15
left set				25
left set ,	7		9	-28
left set .	6
left set and	18
left set in	22			-12
left shave	6
left she	10
left she want		12
left she's get			6	-23
left shed	-7			17
left sheet say	19
left shift	9
left ship	-16		15		18
left shop		-7	-11			21
left short	-21	33
left short .	25
left short at	15
left short by	-20	30
left short of	-5	12
left short on	26
left short so	18	-8
left shorted us	-31	40		-7
left shot	-12	-8	-14	28
left should	-17	-5		21
left should be	13
left shy of		-5
left side ,		-26	-18	21
left side .	11
left side of	14
left sign	-11		20
left silicone			16	-4
left silicone ,	-35	28	11
left since	15
left sir	6
left sister				5
left sit		8
left sit at	6
left sit in	22
left sit on	22
left size	9
left skim	15
left slid	-7	-14		17
left slip	10
left smell like	12
left snap	14
left snug	9
left so		11
left so G	20
left so buy	12
left so do	18
left so get	-24	47
left so grab	17	-8
left so it's			4
left so pull	6
left so put	38	-12		-32
left so that's	-22	28
left so the		-20	15	-34
left so there's		-13	17	-7
left so throw	-36	37	-7	-10
left so we're	7
left solder	-23	23
left somebody run	21
left sort	15
left sound like	17
left spare .	-20			24
left spend	-21	-15	-16	31
left split	8
left split at	11
left stack	-12	-8		22
left stain		9		-15
left stairs	-14			24
left stairs :	-25	-20	-12	32
left stairwell	4
left stand	-4	16
left stay	14
left stay in	20
left step	5
left stick				11
left still			14
left still get	-7	-4	31	-16
left still have	-22		33
left still in		-9	17
left still need		11
left still on	7
left still owe	19
left still want	-20	28	-14
left stop	-14	20
left store	-8	4	-15	-20	13
left straight	-6	15
left straight .	18
left strip	18
left strip ,	14			-20
left stuff	-15	15		5
left supply	23
left swap	-20			30
left swap ,	-17	-5		20
left swap .	14
left swap for	-31	34
left swing	4
left t -	13
left take	-11			6		10
left take Q			10	-11
left take me		-11	-5	15
left take out	28			-15
left take the	-29	-17		-22		33
left tall and	-7	14
left tape	19
left tape ,	-8	-22	-24	32
left tape .					11
left tape get	-25	18	15	-17
left test	4
left test .	19
left test with	13
left than	19
left that	-16		28
left that .	17
left that G				12
left that N	26
left that and		22
left that be	-18	-21	-12	33
left that eat				21
left that in	10
left that want	-7	11
left that with				18
left that's	-12	10		12
left that's why	10
left the G	6
left the Q	5
left the bathroom	5
left the garage	-22		25
left the hall	8
left the kitchen				6
left the lady want	-18	21
left the last	-8	-7	9
left the other			-13	11
left the right	-14	20
left the shop	18
left the tile	-16	20
left the top	7
left the truck			11	-6
left them ,	15
left them .	33
left them in	10
left then .	-14	-10	19
left then i	14
left there	5
left there and		-22	-24	15
left there be	35
left there but	14
left there is	-25	-22	46	-22
left there so	6
left there with	-12			18
left there's			28
left there's about	-18		27
left there's only	10	-17	7	-32
left they get	43	-27	-28	-22
left they want	-8				9
left they're	14			-15
left they've get	27		-10	-12
left thick ,	13	-18		-16
left thing		-5	14
left thing is	8
left think it's		6
left third	15
left this is	16
left those		-12	5
left those and		30		-18
left though		-16		-7	10	14
left through				31
left through at	6
left throw	-21	23
left tight	11
left tighten	19
left til		7
left tile		10
left tile ,	-12	-5	20
left tile .	-15	-13		22
left tile and	19
left tile so	6
left till	8
left till T	25
left to bare	7
left to be	19
left to bring	6
left to buy		6
left to cut	-17	6		10
left to do	16
left to have	-21	27	-5
left to match	-9	16
left to move	14
left to pull	4
left to put	-28	30		8
left to run	-12	17
left to see	9
left to use	20
left too	-9	8
left too .	7
left too so	-23	10	-25	8
left top	5
left top of	22
left trim			16	-10
left truck			11	-6
left truck .	34	-5		-16
left truck eat	12
left trust	7
left try		-12	7
left turn out	9
left under	21
left under it		19	-8
left unit	23
left unit N	21
left until	12
left up ,				18
left up .	31		-7	-17
left up at	9
left up for	8
left up from	16
left up in	23
left up on	-20			35
left up so		13		-16
left up with	6
left upstairs	10
left upstairs bath	20		-5	-9
left upstairs hall	15
left us	-22	34
left use				31
left use ,			29	-21
left use .	12			-10
left use about	-30	-11		42
left use up	-34	14		6
left wait	22	-6
left wait for		10
left wait on	-13	26
left walk	14
left wall				5
left wall ,			-7	17
left wall and	21
left wall with	-6			16
left walls ,		-12		14
left want Q	-14	17
left want to	10
left wardrobe	14
left wash	9
left water	-10			17
left water in	6
left we	10
left we do	11
left we finish	16
left we get	-6		12
left we hang	28			-11
left we have			6	-8
left we need	-27	43
left we set	17			-12
left we use	-25			47
left we want	-32	34
left we're		14	-19	-14
left we've get		-20	13	-12
left weigh in	-14		-8	14
left well	-8			5
left were	21			-7
left wet	9
left what	21
left where	11
left which	11
left which is	8
left white	-12			11
left white and	-5		15	-12
left wide ,	22			-12
left wide and	24
left will need	28	-24
left wire ,	-23	30
left with G	-38	9	-19	29
left with Q	20
left with the			10
left won't	4
left work	6
left work .	24			-12
left wrap	23
left yeah	11
left yet .		19	-11	-17
left you	23
left you want	24	-11
left your	15
left ☐	-17	21		-7
left1 
	18
left1 !	-5	-7		16
left1 &	-5			5
left1 '	10
left1 (	-10
left1 *			16
left1 +	-10
left1 /	22
left1 =	23	-14	-16	-14
left1 ?	10
left1 @	28
left1 ]					14
left1 a		-11		-8	23
left1 above	6
left1 across	22
left1 add				9
left1 adjust	6
left1 again	5
left1 against	15
left1 all				17
left1 along	18
left1 already		-10
left1 alright	9
left1 also		21		-21
left1 are	16
left1 around	6
left1 as	26
left1 ask	23
left1 at	15
left1 attic	17
left1 away	13
left1 back						19
left1 bad	11
left1 bag	-16		24
left1 balcony	13
left1 bare	14
left1 basement	18
left1 bath	20
left1 bathroom	10
left1 because	14
left1 bedroom	20
left1 bedroom 2	13
left1 before	18
left1 behind	13
left1 below	7
left1 bend				13
left1 beside	19
left1 between	32
left1 big	16
left1 black		9		-5
left1 block	8
left1 blow				6
left1 boss	7
left1 bottom	14
left1 box	4
left1 br	-6			16
left1 bracket	-9	-20	21
left1 break.	18
left1 bring		16
left1 burn	-9	-11		27
left1 but	14
left1 butter	12
left1 buy	-23				22
left1 by	14
left1 c	17
left1 call	13
left1 catch		9
left1 caulk	20
left1 cause	7
left1 ceiling	-5			12
left1 cellar	10
left1 change	-9	6
left1 charge	8
left1 check	13
left1 chip				6
left1 choose	10
left1 clean	25
left1 clear	13
left1 clip	-26		11	7
left1 close	6
left1 closet			7
left1 color	11
left1 count	-14		22	-19
left1 cover	9
left1 crack	-10			15
left1 cut out	13
left1 day	15
left1 dead	15
left1 deck	-16			20
left1 deep	5
left1 den	5
left1 dig	19
left1 dining room	7
left1 drags on	8
left1 drain	22	-5		-8
left1 drill	24
left1 drip	8
left1 drive	-4	-10		21
left1 dry	4
left1 dump				7
left1 eat	-6			30
left1 either	6
left1 em	-15	9		-7	13
left1 empty	12
left1 end	12
left1 enough	14
left1 ensuite				13
left1 entry	10
left1 every	6
left1 everything				6
left1 exam	22
left1 except						5
left1 exterior	10
left1 extra	26	-21
left1 family room	8
left1 feed	8
left1 fifth	19
left1 figure		24	-10	-14
left1 file	7
left1 fill	23
left1 fine	16
left1 finish	5
left1 first	-18	15
left1 fit	-14				18
left1 fix	9
left1 flash	-8			14
left1 flip	20
left1 floor			10
left1 flush	20
left1 foam		-13	-7	24
left1 forget	-4	12
left1 frame		11
left1 from	8
left1 front	16
left1 garage			8
left1 get	-13
left1 give	21
left1 glue	7
left1 good			6
left1 grab	-5	8			5
left1 grind				9
left1 grout	12
left1 guest bath	7
left1 guest room	12
left1 half	-7		23	-12
left1 hall	6
left1 hall bath			5
left1 hallway			8
left1 hand			9	-9
left1 hang				6
left1 hard	19
left1 haul	13
left1 her		-11	14
left1 here	-25	-11	33	-15
left1 hi	10
left1 hit	18
left1 house	11
left1 how	12
left1 i	12
left1 i'm		11		-7
left1 i've		16	-13	-8
left1 if	14
left1 inside		5
left1 install	-10	-5		20
left1 insulate	14
left1 into	26
left1 isn't	13
left1 keep			9
left1 knock	8
left1 l	9
left1 ladder	6
left1 land	20
left1 last			9
left1 laundry	18
left1 laundry room	10
left1 lay	-10			28
left1 least		6
left1 library	16
left1 lift	9
left1 like	7
left1 linen closet	19
left1 listen	7
left1 little	4
left1 living room	21
left1 long	19
left1 loose	18
left1 lose	26
left1 make	38
left1 man	10
left1 mark	15
left1 master	4
left1 master bath		9
left1 match		4
left1 maybe	-7		35
left1 me		24
left1 meantime	14
left1 measure	6
left1 meet	5
left1 mind	12
left1 miss		12
left1 mix		-7	-7	15
left1 more	14
left1 move	12
left1 mudroom	12
left1 n	14
left1 nail	-22			19
left1 near	6
left1 need		24
left1 never	10
left1 new	11	-6
left1 news	8
left1 nice	-17			21
left1 nick	9
left1 no	29	-10	-6
left1 not	20
left1 notch	9
left1 nothing	-20			23
left1 notice	18
left1 off	15
left1 office	7
left1 oh	35
left1 oil	13
left1 ok	29
left1 old	28	-15	-5	-12
left1 on	6
left1 once	9
left1 one's	22
left1 ones	5			-12
left1 only			19
left1 onto	9
left1 opened up	15
left1 or		5
left1 order	-8	17			8
left1 out	13
left1 outside	-9	8
left1 outta	35	-8
left1 over	21
left1 owe		13
left1 own	19
left1 pack				10
left1 paint	24
left1 pantry	19
left1 pass				18
left1 past	23
left1 patch	23
left1 peel	-20			30
left1 pick	15
left1 place	-13			18
left1 please		14	-9
left1 plug	28			-12
left1 plumb	17
left1 plus	-5	21
left1 point	21
left1 porch	6
left1 pour				17
left1 powder room	10
left1 prime		-16		14
left1 proud of	9
left1 pull	7
left1 put				10
left1 quick	19
left1 reach	11
left1 read	10
left1 reckon		8		-10
left1 redo	-6			16
left1 rehang	24			-15
left1 reorder	-16	11			11
left1 replace	-17	6		18
left1 require		8	-12	-14
left1 reset				4
left1 rest	-31	-21	40	-26
left1 return	-5			-17		20
left1 right		9
left1 ring	10
left1 rip	10
left1 roll	17
left1 roof	-21			24
left1 room	7
left1 round	9
left1 rub	9
left1 s	7
left1 salon				6
left1 sand	-10	6
left1 say	4
left1 scrape	5
left1 scratch			15
left1 screw				7
left1 scribe	26
left1 seal	22
left1 second	10
left1 send	-9	7				7
left1 set				25
left1 shave	6
left1 she	10
left1 shed	-7			17
left1 shift	9
left1 ship	-16		15		18
left1 shop		-7	-11			21
left1 short	-21	33
left1 shorted us	-31	40		-7
left1 shot	-12	-8	-14	28
left1 should	-17	-5		21
left1 sign	-11		20
left1 silicone			16	-4
left1 since	15
left1 sir	6
left1 sister				5
left1 sit		8
left1 size	9
left1 skim	15
left1 slid	-7	-14		17
left1 slip	10
left1 snap	14
left1 snug	9
left1 so		11
left1 solder	-23	23
left1 sort	15
left1 spend	-21	-15	-16	31
left1 split	8
left1 stack	-12	-8		22
left1 stain		9		-15
left1 stairs	-14			24
left1 stairwell	4
left1 stand	-4	16
left1 stay	14
left1 step	5
left1 stick				11
left1 still			14
left1 stop	-14	20
left1 store	-8	4	-15	-20	13
left1 straight	-6	15
left1 strip	18
left1 stuff	-15	15		5
left1 supply	23
left1 swap	-20			30
left1 swing	4
left1 t finish.	-9			15
left1 t fixture.	15
left1 t surface.	15
left1 t work.			13
left1 take	-11			6		10
left1 tape	19
left1 test	4
left1 than	19
left1 that	-16		28
left1 that's	-12	10		12
left1 there	5
left1 there's			28
left1 they're	14			-15
left1 thing		-5	14
left1 third	15
left1 those		-12	5
left1 though		-16		-7	10	14
left1 through				31
left1 throw	-21	23
left1 tight	11
left1 tighten	19
left1 til		7
left1 tile		10
left1 till	8
left1 too	-9	8
left1 top	5
left1 trim			16	-10
left1 truck			11	-6
left1 trust	7
left1 try		-12	7
left1 under	21
left1 unit	23
left1 until	12
left1 upstairs	10
left1 upstairs bath	20		-5	-9
left1 upstairs hall	15
left1 us	-22	34
left1 use				31
left1 v buy.	-23	18			22
left1 v need.		22
left1 v return.	-18					18
left1 v see.	16
left1 v use.				31
left1 wait	22	-6
left1 walk	14
left1 wall				5
left1 wardrobe	14
left1 wash	9
left1 water	-10			17
left1 we	10
left1 we're		14	-19	-14
left1 well	-8			5
left1 were	21			-7
left1 wet	9
left1 what	21
left1 where	11
left1 which	11
left1 white	-12			11
left1 won't	4
left1 work	6
left1 wrap	23
left1 yeah	11
left1 you	23
left1 your	15
left1 ☐	-17	21		-7
left2 !	-11			9
left2 '	-8	-10			18
left2 (	-6	-15	28
left2 )	5			-13
left2 +		15
left2 -	-20
left2 /	4
left2 1	10
left2 5	9
left2 :	-6
left2 ;			-11	6
left2 @	15
left2 [		-5		-7	18
left2 about	20			-5
left2 account	15
left2 across	31
left2 adjust	20
left2 aff	8
left2 again	4
left2 ain't	18
left2 air	21
left2 alone	10
left2 already		-4	5
left2 alright	23
left2 also	-6			-14	14
left2 am	-10	-19	29	-26
left2 anchor		19		-18
left2 another	-6		16
left2 anyhow	-6	16
left2 anything	4
left2 anyway	22
left2 apart	14
left2 arm	30	-24
left2 around	-17			26
left2 arrive	12	-12		-9
left2 attic	5
left2 away	26
left2 b	12
left2 bad	20	-14
left2 bag	16			-17
left2 band	15	-12		-13
left2 bar			8
left2 basement				10
left2 bath		-5		18
left2 bathroom	38			-13
left2 bay	29			-10
left2 because	25
left2 bed	27			-12
left2 bedroom	10
left2 bedroom 2	30			-7
left2 bedrooms	-7	-6		20
left2 behind	20
left2 below	12
left2 bend		12
left2 better		16		-14
left2 between	32			-22
left2 big	14
left2 black	8			-27
left2 block	-5			20
left2 blow		8
left2 board	4			-15
left2 boards	5	-26		8
left2 bolt	-11	10
left2 bone	15
left2 book	26	-6
left2 boss	14
left2 both	37			-15
left2 bottom	15
left2 br	22
left2 bracket				-24
left2 brass	15			-18
left2 bring		5
left2 brushed nickel	-14		17
left2 bubble	14
left2 build		-14	-6	11
left2 burn	-10			44
left2 bust					12
left2 buy		23
left2 buzz	-8			16
left2 c	28
left2 cafe	15
left2 can	26
left2 can't	31
left2 card	-9			15
left2 case	32			-21
left2 catch	14
left2 cause	24
left2 center		11	-13
left2 centre	-12	-12		20
left2 centres	6	-4
left2 change	-9	-15		17
left2 charge	8
left2 chase				9
left2 check	20
left2 chew	-21	24		-5
left2 chip	9
left2 chirps	-37	34
left2 church	22
left2 clamp	-17	5		13
left2 clean	7
left2 clip	-8			18
left2 clog	9
left2 closet	11	-21
left2 co	27			-10
left2 coat	18
left2 code	23	-8
left2 cold	30
left2 color	10
left2 complete	-34	-10		38
left2 correct	-9			16
left2 could		11		-24
left2 count	17		-9	-21
left2 counter	16
left2 cover					16
left2 crack	29
left2 credit	-14	-13	-8	-16		24
left2 crook	5
left2 crown	20
left2 crush	14			-5
left2 ctr	-5	-19	-4	20
left2 customer	8
left2 cut			8
left2 cut out	18
left2 cutout	14
left2 day	14
left2 daylight	7
left2 dead				12
left2 deck	28
left2 deliver	13		12	-21
left2 den	-8	-16	6	10
left2 dent	23	-10
left2 didn't		8
left2 different	13
left2 dig	20
left2 dime	18
left2 ding	16
left2 dining room	35
left2 doesn't	17
left2 don't	37
left2 dont	8
left2 down			5
left2 downstairs	-18	21
left2 draft	5
left2 drag	6
left2 drain	-8		11
left2 draw	21	-6
left2 drill	14
left2 drive	21
left2 drop	36
left2 drum	21
left2 dry	7
left2 drywall		-11	-5	17
left2 each	13	-8
left2 eat	13
left2 eggshell	-18	7	21	-12
left2 egress	9
left2 either	-8	17		-9
left2 else	26	-7		-7
left2 em	9
left2 empty	17			-8
left2 end				18
left2 ends		-13	27	-14
left2 enough	-6	-15	32	-21
left2 entry	12	-6	10	-20
left2 epoxy	23
left2 even		-17
left2 ever	18
left2 every				8
left2 except	-12	18
left2 exterior	-6	15
left2 extra	-8	-9	-20	-14	-7	23
left2 far	-7		19	-17
left2 feel				4
left2 fella	19
left2 fence		-11		18
left2 figure	14
left2 file	24
left2 fill				15
left2 finally	11
left2 find			16
left2 fine	11
left2 finish				19
left2 fire	9
left2 fireplace			16
left2 first	-29	4		11
left2 first coat				10
left2 fit				10
left2 fix	-7	9
left2 flashlight	23	-19	-12	-12
left2 flat	15
left2 float	23
left2 flush	29
left2 foam	-13			29
left2 footing	20
left2 forget	9
left2 frame	5
left2 free	12
left2 from	11
left2 front	-13			31
left2 frost	7
left2 full	13
left2 gable	26		-4	-10
left2 gap	8
left2 garage	7
left2 gary	30
left2 gauge	14
left2 give					7
left2 gonna		12
left2 good	32
left2 gotta		31
left2 grade		-19	-10	18
left2 gray	-20	7
left2 grind	20
left2 grout	8
left2 guy	25
left2 guys	19
left2 hair			6
left2 half			14
left2 hall				11
left2 hall bath	16
left2 hand	-23		27	-9
left2 happen	19
left2 happy	18
left2 has	4
left2 hasn't	25
left2 he	18
left2 he'd	13
left2 head	-13	15
left2 hello	16
left2 her	28
left2 hey	25	-8
left2 hi	17
left2 him	13
left2 himself	5
left2 hinge	9
left2 hold		10
left2 hole	13
left2 holes		-9	-6	15
left2 hollow	22
left2 home	-7	-10	-19	-11	26
left2 homeowner	12
left2 hook	6
left2 hot	17
left2 house	17
left2 hum	5
left2 hump	7
left2 hung up	5
left2 i'd	-12	40		-20
left2 i'll		20
left2 i'm		46
left2 i've	-16		51
left2 if	27
left2 inside	27
left2 inspector	25
left2 install	25
left2 instead	19
left2 island	9
left2 it's	12
left2 its	7
left2 job		-18	16
left2 joint	-9			24
left2 just				11
left2 keep		12
left2 kind	7
left2 kit					13
left2 kitchen	34
left2 knock				6
left2 know				8
left2 label	7
left2 ladder	25
left2 landlord	11
left2 laser	28	-21
left2 last	-9			19
left2 latch	11
left2 laundry	10
left2 lay	-5
left2 layers	16
left2 leak	12
left2 leans	6
left2 leave			6
left2 leg	11
left2 legs		-17		15
left2 let				8
left2 let go	23
left2 lid	-24			28
left2 lift	19
left2 like		-15		10
left2 line	17		-12
left2 list	-6	14
left2 little	17
left2 live	31
left2 living room	7
left2 lock	13		8	-22
left2 lol	17
left2 long		24
left2 look	23
left2 lose	-16	9		5
left2 lot	8	-12
left2 lower	13
left2 luis	27	-6		-13
left2 lunch		7
left2 machine	22	-18
left2 main	17
left2 make		8
left2 man	11
left2 mark	13
left2 master bath	19
left2 match	-6	-5	17
left2 max	23
left2 maybe	-15	25	-5	-14
left2 me	-19		25
left2 measure	8
left2 middle	18
left2 mill	-17			-13	24
left2 min	17
left2 mine	14
left2 miss		23
left2 more		7
left2 mortar		-8		7
left2 mount	30			-9
left2 move	24			-9
left2 mrs	10
left2 mud	-11	11	5
left2 mudroom		12
left2 must	22			-5
left2 my	20
left2 nail	-15			19
left2 near	-5	-18	21	-14
left2 need		7
left2 never	11
left2 next	7
left2 nice	12
left2 night	25
left2 no	10
left2 nobody	8
left2 noise	18
left2 noon	-7	-18		-25		23
left2 nos	34			-17
left2 not	8
left2 notch	6
left2 note	9
left2 nothing				6
left2 number				12
left2 oak		-14		5
left2 off	12
left2 office	-6	-5		19
left2 oil	19
left2 old	9
left2 one's	27		-6	-6
left2 ones					8
left2 only		-26	7
left2 open			6
left2 opened up	20	-16
left2 or	35
left2 order	-15	24
left2 oscar	-6	21		-21
left2 outside	19
left2 owe	-20	32	-13	-20	8
left2 owner	12
left2 pack	-13			24
left2 paint		-7	18
left2 painter		13
left2 pantry				15
left2 paper	34
left2 party wall	26			-8
left2 pass	18
left2 past	5
left2 peel	25
left2 phone	20
left2 pick	-25	14		-7	36
left2 piece	5
left2 pieces	-13	20		-12
left2 pin	-7			16
left2 pipe	21
left2 place	6
left2 plane	15
left2 plaster		-17	-10	19
left2 plate	-17	13	-13	8
left2 plate's	25	-5	-9	-16
left2 please		26
left2 plenty	-21		26
left2 plug	15
left2 plumb		-8	11
left2 point	-10		17
left2 porch	34	-11		-27
left2 pour	21	-16	-8
left2 powder room	-10	-8				23
left2 pressure	5
left2 prime				14
left2 problem		13
left2 pump	20
left2 punch	30			-6
left2 punky		12
left2 push	7
left2 put	-19			33
left2 quick		-4		10
left2 quiet	-25	32		-8
left2 quit	12
left2 quote	20
left2 rain	21
left2 ray	18
left2 re	25
left2 ready	13			-18
left2 real		12		-12
left2 rebuild	-26	-5		36
left2 red	10
left2 redo		-7	-7	15
left2 rehang		7		-7
left2 require	-29	32	6	-24
left2 reset				5
left2 rest	32
left2 return	-8	8
left2 reveal	14
left2 right	12
left2 rise	27
left2 rm		-8		19
left2 rock	6
left2 rod		13	-17
left2 roll	22			-6
left2 roof	17
left2 room				11
left2 rotten	4
left2 row	22
left2 rusted through	18
left2 sag	5
left2 salon			-7	4
left2 same	29	-16		-13
left2 sand	9			-9
left2 save	32	-15
left2 say		20
left2 scrape	22		-16
left2 scratch	17
left2 seams				9
left2 seat	11
left2 second	-4	9	-5
left2 second floor	-5			12
left2 send	-13			-6		20
left2 set	8
left2 sheet	15
left2 ship	20
left2 shop			6
left2 shot	-4	23		-7
left2 should	8
left2 show	25
left2 shut	8
left2 sign	19	-8
left2 silicone	-17				10
left2 sister	12			-22
left2 sit	6
left2 size	16
left2 skim		-11	-5	11
left2 skirt			15	-16
left2 slab	18			-22
left2 slip	18		-18	-19
left2 smell	11
left2 smooth		-12			16
left2 snake	16
left2 snap	13
left2 snug	28			-14
left2 soft	-9		4			10
left2 soft close	4
left2 soft spot	6
left2 solid	9			-21
left2 somebody's	16
left2 somewhere	-17	21
left2 sorry	10
left2 sound	24
left2 spare	-18		11	11
left2 sparky	14
left2 spin	-9				18
left2 spins		-6	18	-19
left2 splice	21
left2 spot	21
left2 spray	7
left2 square	23
left2 squeak	17
left2 stack		-7	9
left2 stair	15
left2 stairs				12
left2 stairwell	16			-5
left2 stand	23
left2 start	18
left2 static	9
left2 stay	-5	-10	26
left2 step	19
left2 steps	23
left2 stick	9
left2 stop	10
left2 store	4			-8
left2 straight	-13	21
left2 strap	30
left2 street	25	-22
left2 strike	-6	15
left2 stuff	9			-12
left2 sunroom	19	-13
left2 supplier			10
left2 supply	-21			29
left2 surround	17
left2 swap				11
left2 sweat	-24	-19	16	-16	15
left2 sweep	25	-5
left2 sweet	17
left2 t	5
left2 t role.	5
left2 tae	15
left2 tag	16
left2 take				-22		10
left2 talk	6
left2 tank		4
left2 tap	21	-10
left2 tear	21
left2 tell	17
left2 template	16
left2 test	25
left2 than	6
left2 that'll	-4	16	-10	-22
left2 that's	12
left2 the lady		12
left2 the yard	10	-18	5
left2 then	-4	20
left2 there's			18	-14
left2 they've	26		-7	-10
left2 thick		-9
left2 thing	14
left2 think	13
left2 third	-6		14
left2 this			-4	21
left2 though	19
left2 thread		-12		8
left2 throw	34			-14
left2 tight	15			-6
left2 tighten	22			-6
left2 time	-6			7
left2 tip	15
left2 toast	-33	39	-13	-8
left2 too high	-7	14
left2 too long	11
left2 too short	21
left2 top edge				8
left2 top's	14
left2 torque	12
left2 total	-30	18	-10	20
left2 touch	11
left2 trim	10
left2 trip	25	-19
left2 truck			9	-25
left2 try		8
left2 turn	14
left2 under	11
left2 underneath	20
left2 unit	-6					21
left2 upstairs	-6			21
left2 us	16
left2 use	-16			26
left2 v buy.		22
left2 v need.		14
left2 v return.	-8	8
left2 v use.	-16			26
left2 vacuum	25			-14
left2 van	-6		19	-20
left2 vent	11
left2 wait		12
left2 walk	11
left2 wall's	10
left2 walls	25		-6
left2 want	9
left2 wash	23			-8
left2 wasp nest	5
left2 waste	31	-15
left2 water	21
left2 wax	-14	16
left2 we'd	-28	30
left2 we'll	-43	46
left2 we're	-23	19
left2 we've	8	-19	9	-14
left2 weatherstrip		9		-6
left2 weep	5
left2 weigh				5
left2 weight	27			-7
left2 were	11
left2 wet	25
left2 what	18
left2 where	12
left2 which	11
left2 white	-23	16	25	-21
left2 who	21
left2 whoever	19
left2 whole	17			-4
left2 wide	28
left2 will	-9	26
left2 wind	19			-7
left2 wire		11
left2 without	-19		24
left2 wobble	23
left2 won't		10
left2 work	32
left2 would	-19	22
left2 wrong	34	-10
left2 x	18
left2 yet		20
left2 you	33
left2 your	7
left3 !		9
left3 &		12		-18
left3 '	26			-15
left3 (	25			-9
left3 *	31	-17	-9
left3 +		-4
left3 -	9
left3 /	19
left3 3	20	-12
left3 4	-12			17
left3 ;			6
left3 ?			-16
left3 @	28	-9		-10	10
left3 about	9		4
left3 above	21
left3 across	-5			18
left3 add	32			-12
left3 after	19
left3 again	28
left3 ain't	7
left3 alarm	15
left3 all				8
left3 almost	9
left3 already					7
left3 am	26
left3 an	18
left3 anchor	-4		15	-8
left3 any	-16	21
left3 anybody	21	-5
left3 anyhow	6
left3 anything	5		-17
left3 are				6
left3 around	14			-12
left3 arrive	4
left3 as	-14	10		8
left3 attic	13
left3 away	-5	8
left3 b	-32		19	11
left3 back bedroom	12
left3 bad	-6				18
left3 bag	6	10		-12
left3 bar	-15		11	8
left3 bay	-34			13	23
left3 bead	-7	-11	-13	20
left3 because	16
left3 bed		-10		30
left3 bedroom 2	13
left3 bedrooms	9
left3 before	28
left3 below	25			-10
left3 bench		-5		13
left3 bend	-6	26		-19
left3 better	26	-19
left3 between	20
left3 big	7		-7
left3 birch		-19	11
left3 black		26	-11	-16
left3 block	-32			13	15
left3 blow		11
left3 board	-5	16
left3 boards	-4
left3 bolt	14
left3 bone	15
left3 book	12
left3 boss	9
left3 both	11			-22
left3 bottom	9
left3 br	23	-7		-15
left3 bracket	31			-19
left3 brass		-11		11
left3 break	-5		22	-11
left3 bring	5	5		-4
left3 brush	-35	-5	21
left3 bubble	19
left3 build	24			-11
left3 but	-8	11
left3 button	16	-5
left3 buy	13
left3 c	15
left3 can't		-6		15
left3 cap	7	-23
left3 card		-11	-10	13
left3 carpenter		9
left3 catch	7
left3 caulk	-36	14	26	-12
left3 cellar	29			-22
left3 center				14
left3 change		7	-29
left3 chase	-6			14
left3 check	-6	-7	19	-17
left3 chip	-7			14
left3 chirping	-6			13
left3 clamp				11
left3 clean				4
left3 clear	35			-24
left3 client	9
left3 clip	15	-18
left3 close		8
left3 closet	23
left3 code	30	-8	-15
left3 coffee	16
left3 cold	7
left3 connect	-8			15
left3 corner						12
left3 counter				8
left3 crack	-21	21
left3 crown	-13	-6		-4		19
left3 cup	-15	6	-6	-15		19
left3 customer	17
left3 day	35
left3 dead	38	-14		-10
left3 deck	21
left3 deep	7
left3 den	11
left3 dent	8
left3 dial	8
left3 dining room	25			-23
left3 doesn't	25	-20
left3 dog	14
left3 dont	8
left3 double	-15			16
left3 drags	14
left3 draw	-15	21		-14
left3 drill	-11			23
left3 drip	-19			15
left3 drive					16
left3 dump	9
left3 each	-4	-38	-17	40
left3 eat	18			-12
left3 electrician	22	-14	-24		21
left3 em				-15
left3 empty			8
left3 entry	6
left3 epoxy	5
left3 every				13
left3 everything	20	-13
left3 except	27		-6	-16
left3 fall	16
left3 falls	12
left3 far	13
left3 fat	-11	22
left3 feel			13
left3 fell	14			-9
left3 fence	-10	-11		19
left3 fill	-12	15
left3 finally	22	-14		-11
left3 find		15		-5
left3 finish	-29			22
left3 fire	12
left3 fit				10
left3 fix	36	-9		-5
left3 flash	8
left3 float	-7		-6	17
left3 floor	20	-8
left3 foam	-25	5		20
left3 foil		9
left3 for				-6
left3 forget	-16	17
left3 fre	8
left3 free	17
left3 fresh			16	-17
left3 from	4	-12
left3 front	-8	-19		29
left3 frost	18
left3 full		17
left3 gap	25
left3 get	10
left3 give		-6	-12	11
left3 glue	-9
left3 gonna	10
left3 green		11		-5
left3 grout	-8		6	7
left3 guest room	26
left3 guy	15
left3 hair	7
left3 half			-32	-19		22
left3 hall	-9	26
left3 hallway	-7			13
left3 hand	-13	14	-8	9
left3 hang				6
left3 hard	10
left3 has	35
left3 have	20
left3 he				-5	9
left3 he's	-15		20			4
left3 head		21
left3 hearth	14
left3 her	32	-10		-25
left3 here	9
left3 high	5
left3 him	23	-17
left3 hinge			7
left3 his	25
left3 hit				5
left3 hole	-24		14
left3 holes	11			-9
left3 hollow	-18			27
left3 hook		-7			7
left3 hot	17
left3 house	12
left3 how	-14	23
left3 hum	23			-10
left3 i'll	8
left3 i'm			12
left3 i've		-6	24	-10
left3 if	36	-5
left3 inch		14
left3 inside	-37	21		19	-6
left3 inspector	12
left3 into	-25	28
left3 island	-12		-6	16
left3 isn't	12
left3 it's	17
left3 job		15	-9	-4
left3 joint			17
left3 keep	26			-10
left3 kit	-16		12
left3 knock	19
left3 know	33			-6
left3 ladder	7		-10
left3 lag	-17			19
left3 land	37		-29
left3 landlord	6
left3 last	-6
left3 laundry				8
left3 lay	20
left3 lead	-5			14
left3 leak				8
left3 lean		-11	14	-21
left3 let	26
left3 level	5		-17
left3 lid	45	-33
left3 linen closet	-6			8
left3 lip	-12			13
left3 little	14
left3 live	26			-17
left3 living room	13
left3 lock	-14			19
left3 long	-4	8
left3 long wall	16
left3 longer	41	-31
left3 loose	6
left3 lose	10
left3 lot	26	-4		-13
left3 lounge	16
left3 low	10
left3 lower	8
left3 lunch	16
left3 m				8
left3 man	-10			20
left3 master			-15	21
left3 maybe	-14		14
left3 mid	15			-9
left3 middle				9
left3 miss	-7	14
left3 mix	17			-22
left3 moisture	22	-10
left3 mold	18			-8
left3 more		6
left3 morning	17
left3 mount	12
left3 move	27
left3 mrs				18
left3 mud	25	-10
left3 mudroom	32		-15	-5
left3 must		11
left3 my		6
left3 nail				19
left3 near			5
left3 never				14
left3 nobody	28
left3 north side	-6			14
left3 number	28
left3 nursery	-24	-17	-8	33
left3 oak	-37		27
left3 ofc	6	-24	-26	9
left3 office	5	-23		16
left3 oh		-5	12	-6
left3 oil	-14	29	-13
left3 okay	38
left3 old	6
left3 once	17
left3 one's		11
left3 ones	25
left3 only	21
left3 open	-25	13	7
left3 opening's	14
left3 other		10		-17
left3 outside		7
left3 owe		11
left3 own	14
left3 pack		10
left3 painter	11
left3 pantry	9
left3 paper	30			-12
left3 patch	-9	9		8
left3 phone	13
left3 pick	-12	27
left3 piece		-13	17	-15
left3 pieces		-17	-17	13
left3 pine		-11	16	-11
left3 place	20			-31	10
left3 plane	11
left3 plaster	-6	14
left3 plate	18
left3 please	8
left3 plug				13
left3 plumb	4
left3 plumber	16
left3 point	-15			19
left3 pour	12
left3 powder		-19	-10	14
left3 prime	-7			7
left3 proper	-21	21
left3 pull	31
left3 pump		-10		15
left3 put	7
left3 putty	32		-8	-7
left3 r	-16	19
left3 rain	-9	-8	10			12
left3 raise	-14	19
left3 rate	18	-16	5	-28
left3 ray	19
left3 read	21
left3 ready	21
left3 recut	14
left3 red			-25	14
left3 rental	8
left3 repair	-21	8		12
left3 replace	-4			6
left3 reset	13
left3 rest		16
left3 return	-5		15
left3 reveal	-13	19		-9
left3 right			5
left3 ring	-32	19		21
left3 rip			5	-8
left3 rm	-20			34
left3 rocks	-17	26
left3 rod	6
left3 roll	-22		7	19
left3 room	5
left3 rot				6
left3 rough	13
left3 round	17
left3 run	17
left3 s	32
left3 sag	-6
left3 salon	13		-7
left3 same	26	-6		-10
left3 say		-6	8
left3 scrape	16
left3 scribe	10
left3 seal	-7				5
left3 second	-26	9
left3 second floor	4
left3 send		6
left3 set	13
left3 she	17
left3 she's	14
left3 shim	6			-11
left3 shop	-13	16	-15		8
left3 short			7
left3 shot	-16	18
left3 should	-9			8
left3 show	31	-17
left3 shut	17
left3 side	-10
left3 sign	17			-9
left3 silicone			-4	5
left3 since	19
left3 sister	-12	14
left3 sit	5			-8
left3 skim	9
left3 slab	30			-8
left3 slope	12
left3 slow	27			-22
left3 small	14
left3 smell		6
left3 snake	20
left3 snap	13
left3 snug	-6			17
left3 soft	24			-15
left3 soft close	16
left3 solid	-5	-8		22
left3 somebody	-10	19		-7
left3 somebody's	12
left3 something	16
left3 somewhere	23		-9	-5
left3 sorry	10
left3 spare	-8		20	-18
left3 split	-27	25		7
left3 spot		-14			17
left3 spray	-8			17
left3 square	-42		13	21
left3 stack	-25	-14	21
left3 stainless	-33	-24		24	15
left3 stairs	-14			14
left3 stairwell	-7			16
left3 stand				9
left3 staple	5	-6	10	-14
left3 start	4
left3 stay	11
left3 steps	22	-15	5	-25
left3 stick	16	-4
left3 still		10
left3 store		23		-6	-9
left3 straight				5
left3 strap	20
left3 study	31		-12	-22
left3 stuff	-4	17		-8
left3 supposed		12
left3 swap	-17		15
left3 sweat	-18			22
left3 swing		5
left3 tag				11
left3 take						16
left3 talk	30		-20	-22
left3 tall	25
left3 tap	17
left3 tape	39			-19
left3 tear	8
left3 tell			5
left3 temp	5
left3 tenant	8
left3 test	8
left3 than	5
left3 the lady	-10		21
left3 the wrong	25
left3 their			9
left3 them			20
left3 then	5
left3 they		-27	12
left3 they're	27
left3 thick		-18		18
left3 thing		18
left3 think			-8
left3 third				-7	16
left3 this						11
left3 those	15
left3 though		14		-11
left3 through	5
left3 throw		5
left3 tie	5
left3 tight	-5					5
left3 til	-12	-23	32	-30
left3 time	-27		19
left3 too	-11	27
left3 top	18
left3 touch				13
left3 trim		21		-14
left3 trip	-10	12
left3 truck	7
left3 turn	11	-10	11	-22
left3 under	18
left3 unit	29
left3 unless	16
left3 until	23
left3 upstairs	24	-23
left3 us	-6
left3 van	-27	32
left3 vent				8
left3 vestibule	29	-9		-24
left3 wait	-22		33
left3 walk	-26	9			16
left3 wall's	18	-6
left3 walls	11
left3 want	5
left3 water	23
left3 way	6
left3 we're			18
left3 weather	17	-9
left3 weatherstrip	6
left3 weep		8
left3 weight	28
left3 well	-9			13
left3 were				11
left3 what's		8
left3 when	10
left3 where	20
left3 which	22
left3 white	-17	40		-22
left3 whole	35		-12
left3 wide	13
left3 will		12
left3 wire	14	-19	-11
left3 within		-6		4
left3 without	-24	20			11
left3 wobble		-19	-5	15
left3 wont	24			-4
left3 work	22
left3 wrong	-7	16
left3 x	-8
left3 yeah	15
left3 yellow	5
left3 yet		8
left3 you	24
length after have far	-32	31
length after have here	36		-14	-9
length after have sentence		5
length after need far	-10	-21	10	7
length after need here	10			-8
length after need sentence	-5	31	-16	-30
length after none far		11		-17
length after none sentence		11
length after used far				-5
length after used here		-11		11
length after used sentence			13
length before it came		-11		9
length before it have	-41		45
length before it lacks	34	-4
length before it need		43
length before it used				33
length behind it back		-13	-5	5
length behind it came	-8	10	-6	-30	14
length behind it have	-32
length behind it need	-12
length behind it used	-13	-7		9
length beside be	35
length beside come	-13	13	-8	4
length beside cut	30	-9		-16
length beside figure	-16	23		-6
length beside get	-43		26	-31	7
length beside go	-5	12	-8
length beside hang	-19	-9		25
length beside have	-36	-17	24	12
length beside have b nobody	-15		25
length beside leave	6	-17	9	-24
length beside like			4	-18
length beside measure p other		-16		13
length beside move p other		16	-11	-24
length beside move pp other		-14	11	-16
length beside need		30
length beside need b nobody	-12	23
length beside need b other		9
length beside need b person		20
length beside need s other	-35	37		-11
length beside other b other		27	-9	-25
length beside other b person	-49	32	12
length beside other i other	12			-15
length beside other p other	-12			-9	13
length beside other p person	-30	-17	37	-11
length beside other pp other	23
length beside other s other	25			-8
length beside pick	-21	36
length beside pull	-34	-14	-5	38
length beside put	-49		7	32
length beside run		-16		19
length beside snake	18			-7
length beside take	31			-17
length beside undefined is other	5
length beside use	-29			34
length beside use pp nobody	-5
length beside use pp other	-13			20
length beside want	-10	26		-7
length beside work b nobody		13		-23
length beside work b other	20
length beside work b person	-16	13	-10	5
length beside work bp other				21
length beside work bpp other			-5
length beside work bpp person	-42	-23	14	29
length beside work i other	34	-21	-5
length beside work pp nobody		-26	-13	23
length beside work pp other				13
length beside work pp person	-26	-16		34
length buy imperative behind		4		-4
length cue ate				12
length cue back				5
length cue came				5
length cue have	-23	-13	54	-16
length cue lacks	24
length cue need		40
length cue used				30
length have present behind		-6	26	-5
length kept	-18		23	-32
length left +	14	-10
length left ,	-8	9	-15	16
length left .		-35	30	-12
length left :	-17		-30	29
length left and	-31	41
length left at	29	-6		-15
length left every	44	-9		-31
length left figure	-16	23		-6
length left for	36
length left get	-39		12	-26	18
length left have	-15		28
length left in	32	-6
length left is		-4		7
length left it	-22	18	-31	17
length left it's	27			-8
length left like			9	-11
length left maybe	-21	14	7	-16
length left me	-22	19
length left need	-36	51
length left of	22	-22			8
length left out	33			-21
length left over	24
length left run		-14		15
length left the	40	-31
length left to			-13	11
length left up	-8	14
length left use				23
length left want	-22	32		-6
length more	-7	14
length move past before		-13	19	-19
length move past behind	15	-8	-12
length name flawed	-42	32		-5	4
length named before area	-11	-14	-12	21
length named before finish	7	-14	11	-11
length named before fixture	33
length named before surface		-6		9
length named before tool	23			-10
length named here finish	-25	29
length named here material	-63	40		6
length named here part	-22	36	-6
length named here surface	-7		9	-15
length named here word	-9		-13	7
length need modal behind	-21	31
length need owed behind		16
length not ahead		5		-10
length other copula before	-11	-5	10	8
length other copula behind	20
length other imperative behind		21
length other modal behind	-15	12		5
length other past behind	-11	-31	20	-28	11
length other present behind	-11	17	-12
length pointing	-14	-12	31
length right 
		-21	17
length right #	-16	39
length right ,	13			-6
length right .	-10	7		12
length right Q	46	-26		-16
length right across	19
length right at	8	-12
length right by	21	-10		-9
length right down		-21		7
length right from	25	-13	-4
length right i	13	-18	-20
length right in	-14	-22	9	12
length right is	-21	15
length right leave	-29		45	-10
length right of	-19	-13	21	15
length right on	-18	5		14
length right short				-4
length right so	10			-6
length right that		-23	-27	-25	24
length right to				6
length right up		-30	-10	13
length right with	-11	-13	-4	19	10
length say present behind	-12	18		-6
length says copula before	-30	17	5
length says copula behind	6
length says copula behind not	6	5		-12
length says imperative behind		13
length says modal behind	-20	27	-8	5
length says owed behind		21
length says past before	-41	13		15
length says past behind	-12	-11		20
length sized	-84	13		21	7
length sold so true	-15	8
length then buy b	-20		18	-4
length then move pp	-7		35	-9
length then need b	-6	-30	10	10
length then need s		9
length then other b	10	5		-5
length then other p				5
length then say b	29	-22
length then undefined is	-31	22		7
length then undefined will			11	-18
length then use pp	-16	-6		28
length then work b	6
length then work bpp	6
length then work pp				11
length then work s	21	-18	-9
length use past behind	-19			32
length verb be before	-11	-5	10	8
length verb be behind	20
length verb get behind	-52		17	-19	10
length verb have behind			24	-4
length verb need behind		20
length verb order behind	-28	35
length verb pick behind	-9	28
length verb pull behind	-18			24
length verb put behind			-16	11
length verb run behind		-20	-10	13
length verb take behind	29			-16
length verb use behind	-23			35
length verb want behind	-19	31
length whole clause	-17	19		13
length work imperative behind	15
length work modal behind	9			-19
length work past behind	-9			34
list have			30	-34
list need	-15	53	-23	-28
list used	-17	-26	-23	48
many	46
marked	-20	37		-9
meant back 1	-6
meant back 4	11
meant back 5	19	-25
meant back 6	20	-34
meant back 7	29	-10		-7
meant back 8	9		-5	-19
meant before more			6	-15
meant before new	-18	12
meant before no		9
meant flawed false	18
meant place -				-11
meant ran out		31
more		37
named before area				19
named before finish	-15
named before surface	4
named before tool			11
named here area	16
named here defect	34
named here surface	6
named here work	24
nameless	45
next copula other comma	27			-12
next copula same comma	4
next copula same stop	12
next cue ate other		11
next cue bought other	-5					12
next cue bought same				-15	11	5
next cue lacks other				7
next imperative same stop	23
next modal same stop	12
next none other comma	-33	32
next none same run-on	23
next none same stop	17
next owed same comma	6
next owed same stop	-8	18
next past same and				16
next past same stop	36
next present same stop	32
next use buy imperative same		32
next use buy modal other	26
next use buy modal same	-14	5	7
next use buy owed same	-35	29	13	-9
next use buy past other	32	-20
next use buy past same		-5		-5	38
next use buy present same				-18
next use have imperative same	40			-5
next use measure imperative other	44			-17
next use measure modal other			7
next use measure modal same	17
next use measure owed other	-6	21		-14
next use measure past other		-4		9
next use measure past same	19
next use move modal other	16
next use move owed same	-7
next use move past other	9
next use move past same				6
next use move present other	-9	21
next use need modal other	22
next use need past other	-12	-6	23
next use need past same	-10		14
next use null imperative other	-9		6
next use null imperative same	-7		28	-8
next use null modal other	5
next use null owed same	14
next use other owed other		5
next use return owed other	29	-7
next use return past other	11
next use return past same	-42	-27		-7		51
next use return present same	17
next use say imperative other	23			-9
next use say modal other	-7		18
next use say past same	15
next use say present other	13	5	-10	-5
next use see owed same	9
next use see present other	14
next use see present same	8
next use use imperative same	23
next use use modal same	-8		29	-25
next use use present other	12
next use use present same				10
next use work modal other	5		-5
next use work owed same	6
next use work past other	9
next use work present other	10
next verb add other	6
next verb add same	5	5
next verb adjust same	9
next verb allow same	17
next verb anchor same		6		-7
next verb arrive other		5			4
next verb arrive same	-6	13
next verb ask other	8
next verb auger same	23			-16
next verb back same	30
next verb bag same	12
next verb balance same	-4	-8	22	-20
next verb bed same	-6			17
next verb believe same	-16		20
next verb bend other	19
next verb bend same					10
next verb bet same	15
next verb bin same	25	-12	-9	-15
next verb bind other	11
next verb blow same	30
next verb board same	23	-6
next verb bolt same	-32	-13		40
next verb book same	8
next verb borrow same	-14	11	15	-10
next verb box same	20
next verb brace same	17
next verb break same	22
next verb bring other	16	-27	7
next verb brush same	-20	9	11
next verb bubble same	10
next verb build same						5
next verb bury same	-10	21
next verb butter same	21		-22
next verb buy other	24	-17
next verb buy same				-16	19
next verb buzz same	29
next verb call other			7	-12
next verb can same			7
next verb can't same	8
next verb cap same	27
next verb catch same	21
next verb change other	16	-8		-8
next verb charge same						17
next verb chip same		-13	19	-18
next verb choose same		11	-5
next verb chuck same	20	-10
next verb clamp same	27
next verb clean other	17
next verb clean same	26
next verb clip other	24
next verb clip same	-18	-10		26
next verb close other			8
next verb close same	-10	18
next verb coat same				10
next verb come other		25		-14
next verb complete other		15	-17	-8
next verb consolidate same	9
next verb consum other			14	-21
next verb cope same	19
next verb core same				12
next verb correct other	15
next verb count same	4	-9	14	-16
next verb cover other		-7		11
next verb crack same	7
next verb crank same	4
next verb crosse other	15
next verb crown same	-12	-12	20	-19
next verb cup same			11	-9
next verb cut out same	31			-13
next verb cut same	8
next verb dial same	-14		-15	21
next verb didn't same	22	-12		-7
next verb dig other	4
next verb dig same	5
next verb do other	-19		-12	19	9
next verb doesn't same	23
next verb don't other	32			-15
next verb drain same				11
next verb draw same	26
next verb drill other		-5		13
next verb drill same				5
next verb drip other				19
next verb drip same		23		-7
next verb drive same				8
next verb drop other	6	5		-10
next verb drop same	18
next verb dry other			-22	7
next verb dump same	-12		22
next verb either same	16			-8
next verb empty same	-28		-26	-10	35
next verb end same	29			-7
next verb exchange same	11
next verb fail other	18
next verb feather same	24
next verb feed same	29			-12
next verb feel same	15
next verb figure same	12
next verb file same	30
next verb fill other		-7		14
next verb find same	23
next verb fish same	12
next verb fit other	10
next verb fit same	-8			9
next verb fix other	28			-9
next verb fix same	7
next verb flash same				17
next verb flip same	24
next verb float same	32
next verb flush other				10
next verb flush same	5
next verb foam other	6
next verb frame other	11
next verb frame same	10
next verb fre same	8
next verb get other	7			-8
next verb give same				-11		30
next verb glue other	28			-18
next verb go other		17
next verb gotta same	16
next verb grab other	19
next verb grab same	-20	25
next verb grease same	11
next verb grind other	14
next verb grout same				15
next verb guess same	31	-5
next verb hack same	17
next verb hammer same	10
next verb has same	5
next verb head same	12	-17
next verb help same	-8	17
next verb hit other	6
next verb hit same	6
next verb hold other	18	-26
next verb hold same	8
next verb holler same	13
next verb hum other	12	-27		14
next verb hum same		7		-11
next verb i'd same	20	-5
next verb install same	-14			7	16
next verb iron same	22		-11
next verb jack same	5
next verb jam same	14
next verb keep other	28		-7
next verb key same	17
next verb kid same	17
next verb know same	12
next verb label same				-6
next verb land other	15
next verb land same	7
next verb latch same	22
next verb laugh same	7
next verb lay other	-9	-20	-7	25
next verb leak other	4
next verb lean same			-7
next verb leave other	12	-4
next verb level same	11
next verb lift other				7
next verb like other	-18	19		-10
next verb lip same	18
next verb lit same				7
next verb live same	22
next verb load same	8
next verb lock other			9
next verb lock same	16
next verb look other	15
next verb lose other				-5
next verb lose same	5
next verb love same	21
next verb lower same	26	-10
next verb make other	22
next verb make same	30
next verb mark same	28			-10
next verb mention same	5	-7		-18
next verb meter same	8
next verb miss other				4
next verb miss same	20
next verb mix same	28
next verb mount same	-33	24		20
next verb mud same	33			-14
next verb must same	11
next verb nick same	5
next verb nip same	6
next verb notice same	16
next verb oil same	21			-10
next verb open other	11
next verb order other		-13	6
next verb owe other	-5	15
next verb owe same	26
next verb own same	13
next verb pack same	7
next verb paint other		6
next verb paint same			14	-6
next verb pass other	28
next verb patch other				7
next verb patch same	34
next verb peel same	20
next verb pick other	19
next verb pick same						7
next verb pin same	10		-14
next verb pitch same		-12		5
next verb plate same	-35	-13	-24	40
next verb plug other	20
next verb plumb same	-5			13
next verb point same			-14	13
next verb polish same				6
next verb pop other	17
next verb pour other	5
next verb prime other	-23	-9		29
next verb promise same	11
next verb prop same				10
next verb pry same	5
next verb pull other	5	-12			9
next verb pump same	27			-11
next verb purge other	12
next verb purge same	-32			37
next verb push same	32
next verb put other	15			-7
next verb putty same	15
next verb quote same	7
next verb rake same	-6	-14	24
next verb rate same	13
next verb rather same				9
next verb rattle same	5
next verb reach same	19
next verb read same	18
next verb rebuild same	16			-8
next verb receive other		15
next verb recheck other		-7		10
next verb reckon same			10
next verb recoat same	10
next verb recut same	13
next verb refasten same	5
next verb refit same	7
next verb refix same	22			-7
next verb refuse same	-26	-6				32
next verb reglue other	27	-16		-4
next verb reglue same		7
next verb rehang other	18
next verb rehang same		-5
next verb remake same	9
next verb reorder other	16
next verb reorder same	-33	36
next verb replace other	18
next verb replace same				21
next verb require other	-40	-18	30	16	-25
next verb require same	-16		20	-11
next verb reroute other	14
next verb reroute same	25
next verb reseat same	11
next verb return other	6		6	-11
next verb return same	-34	-13				47
next verb ring same	10
next verb rip same	-10			15
next verb rub same				7
next verb run other				8
next verb run same	8
next verb rust same	-10	-22	5	12
next verb sag same	14
next verb sand other	17
next verb sand same	16
next verb save same	21
next verb say other		10		-9
next verb say same	12
next verb scrape other		10	-8
next verb screw same				18
next verb scribe other	16
next verb scribe same	8
next verb see other	29
next verb see same	6
next verb seize other	17
next verb send other		-18		20
next verb set other			4
next verb shave same	13
next verb shim other	4
next verb ship same	-10			16
next verb short same	-24		-21		22
next verb should same		11		-9
next verb show same	12
next verb sign same	25
next verb silicone same	7
next verb sister same	30
next verb sit other				16
next verb size same	-10	5		7
next verb skim same	22
next verb skin same	22			-14
next verb slap same	-10	9
next verb sleeve same	6
next verb slid same	13
next verb slit same	4
next verb smell same	27
next verb snake same	21	-8
next verb snap other				8
next verb snap same				7
next verb snug same	20
next verb soap same	-14			18
next verb solder same	7
next verb sort same	26			-16
next verb sound same	25			-6
next verb spin same	13
next verb split same	26	-12
next verb spot same	19
next verb spray same	-12		19
next verb squeak other	-16			15
next verb stack same	-14		6	10
next verb stain same	29
next verb stand same		8
next verb staple same	20			-5
next verb stay same	11		11	-16
next verb straighten other	23	-5		-5
next verb straighten same		7
next verb strap same				9
next verb stretch same	19
next verb strip other		-14		17
next verb strip same	-10			9
next verb stuff other	9
next verb supposed same	11
next verb swap other			10
next verb swear same		-4
next verb tack same	12
next verb take other	-10		16	-27
next verb talk other	16
next verb tap same	24
next verb tape other				22
next verb tape same	8
next verb tell other	10
next verb test other		20	-9	-17
next verb text same		4
next verb that'll same		-13			9
next verb thin same		13
next verb think other	8
next verb throw same				-12	14
next verb tie same	-6	16		-5
next verb tile same	29	-15		-12
next verb top same	22			-15
next verb torque same				7
next verb touch other		12
next verb touch same	19
next verb trace other	9
next verb treat same		-4		14
next verb trim same				8
next verb try same	26
next verb tuck same	9
next verb turn other	12
next verb use other	5
next verb vacuum same	15
next verb vent same	22
next verb wait other			-8	15
next verb walk same	-9					7
next verb want other	-9		7
next verb wash same	20
next verb wax same				7
next verb weep other	-4			13
next verb weep same				5
next verb weigh same	-5			16
next verb will same		6
next verb wipe same				7
next verb wire other		6		-8
next verb wire same				15
next verb won't same	12
next verb work same	6
next verb would same	10
next verb wouldn't same	36		-14	-12
next verb wrap same	19
next verb wrote same	-5	14
next verb yank same	-7			11
one after bought far	26			-13
one after bought sentence	-6	14		-26
one after have far		20
one after have here	7	-6
one after have sentence		17
one after need far	-4			12
one after need here		28
one after none far	-16	6
one after none here	22
one after returned sentence		13
one after used far		8
one after used here		-11		22
one before it ate		-8		14
one before it back	-8	11		4
one before it bought	-15			-10		12
one before it came		-17
one before it lacks		5		-19
one before it need		20
one behind it ate	-4			8	-15	17
one behind it back				-5		5
one behind it bought	-45	-28	-25	-10	45
one behind it came		23		-29	4
one behind it have	-12		14
one behind it need		8
one beside add	-16	6		12
one beside are		7		-8
one beside ask		12
one beside bend	-15	13		5
one beside box	26			-21
one beside break	-17	28	-4	-7
one beside bring		20
one beside buy		-10		-5	7	12
one beside buy b nobody	-36	42
one beside buy b other		21
one beside buy b person					18
one beside buy pp nobody		-21	-17	-13	16
one beside buy pp person	-12	-19	19		8
one beside call	-9	15
one beside clear	24
one beside cover	18			-6
one beside crack	-4	15		-4
one beside cut		-10		6
one beside do	-10	13		6
one beside drill				14
one beside drip				18
one beside drop				9
one beside eat		-8		13
one beside fill	10	5		-24
one beside find	13
one beside get	-13
one beside give		8
one beside go	6
one beside grab	-23	35
one beside hang				11
one beside have b person	-29	29		-6
one beside have pp other	16
one beside have pp person	-6	-14		20
one beside hold	15
one beside lean	16
one beside like	15
one beside measure b other	7
one beside measure bp other	-11	25		-21
one beside measure bpp other	11
one beside measure i other	13
one beside measure p other	51	-16
one beside measure pp other	18
one beside measure pp person	-5	14
one beside measure s other	9	-6
one beside miss		13
one beside move b other	6
one beside move b person	14
one beside move p other	-21	-9		28
one beside move pp other		10
one beside move s other	5
one beside need		10
one beside need b nobody	-26	36
one beside need b other	5
one beside need b person	-8	33
one beside need s nobody	-5	11
one beside need s person	23	-9
one beside nothing	-12			6
one beside open	20
one beside order	-16	19			11
one beside other b nobody	-8	9	8	-15
one beside other b other		35
one beside other b person		27
one beside other i other		18
one beside other i person	-7	13			6
one beside other p other		-22		15
one beside other p person	-13		20	-16	13
one beside other pp nobody		-22	-5	-13	19
one beside other pp person				7
one beside other s other	8
one beside other s person	26	-8
one beside owe	-19	24		-7	10
one beside pick		4		-7	5
one beside plane	19
one beside pop	16
one beside prime			16	-10
one beside pull	23
one beside put	-8			32
one beside read	20	-7
one beside return		13	-14	-17
one beside say	42	-16
one beside say b other		6
one beside say pp person	13
one beside say s other		12
one beside say s person	7
one beside scrape	6
one beside screw	-5			21
one beside scribe	21
one beside see b other	19	-6
one beside send		15
one beside set				22
one beside sister	-20			24
one beside stick				6
one beside stop	35	-21		-5
one beside swap	-39	9	6	19
one beside sweat	-38	-17	16		15
one beside throw		10
one beside top	-17	31		-16
one beside touch	13
one beside try	-5	-18	9	6
one beside turn	-30	15	-7	18
one beside undefined is other	7
one beside undefined is person					13
one beside undefined will other	24	-5
one beside use pp other	-24			29
one beside use pp person	12		10	-20
one beside wait	-32	37		-12
one beside want		8
one beside work b nobody	-12	33		-29
one beside work b person	10
one beside work bp other	-25	17		14
one beside work bp person	14			-8
one beside work bpp nobody				10
one beside work bpp other	-14			29
one beside work bpp person				29
one beside work i other	44	-22
one beside work i person		17		-22
one beside work p other	11
one beside work pp nobody	-30			42
one beside work pp person				20
one buy imperative behind		9
one buy past behind	-31	-23		-8	20	15
one cue ate	-5	6
one cue bought	-22				11	11
one cue came	-15				6
one cue lacks	5
one cue need		39
one false	-13
one have imperative behind	5		4
one have present before	29
one kept	-33		26
one left #	9	-7
one left +	-19			16
one left ,	-14			35
one left .	-58		17	33
one left :	-7	-8		22
one left G	14
one left Q	49	-17		-9
one left T	7	-6	9	-14
one left about	31
one left add	-16	6		12
one left after				10
one left and	-33	30		8
one left as	25
one left back	29	-20
one left be				-13
one left bring	-10	26
one left but	-17	23
one left buy	-6	-10		-7	7	13
one left by	26
one left cut				16
one left do	-5	13
one left down	10	-18
one left drop				7
one left except	29	-13
one left find	20
one left for		27
one left from				6
one left get	-17
one left glue	14
one left grab	-16	24
one left him		6		-8
one left hit	20
one left hold	8
one left is	9
one left it	14	-29		7
one left it's		31
one left just	-13	20		-9
one left leave	12
one left like	40
one left make	20
one left maybe	41		-21
one left me	-12	37
one left miss		6
one left need	-6	30
one left not	26
one left now				9
one left of	27
one left off	32
one left one's	15
one left open	-8		17
one left or	36	-27
one left order					14
one left out	30	-5
one left over	14
one left put	-13			25
one left run		7
one left say	12
one left screw	-13			23
one left scribe	21
one left send		11
one left set	-10			22
one left sister	-16			22
one left so	-57	78		-33
one left stick	-12			15
one left take		5
one left than	13
one left that's	17			-20
one left the		5
one left them	5	-39			20
one left there's	29
one left throw	-5			7
one left to	38
one left try	-17	-12	12	10
one left under	35	-14		-5
one left us		6
one left use	-6			25
one left want		11
one left with				14
one left without	20
one measure imperative behind	8
one measure modal behind	-33	36		-8
one measure owed behind	22	-8
one measure present before	-19			29
one measure present behind	19
one more	14
one move imperative behind			12
one move owed behind	-17	-7	-17	-14	24
one move past before	13	-10	-15
one move past behind	26
one move present before		6		-15
one move present behind	20
one named before area		5
one named before finish	-19			18
one named before part	-33	5
one named before surface	23
one named before tool	-25	5	16
one named here area	-8	24
one named here defect	26
one named here finish	-29	30	11	-9
one named here material	-25
one named here part	-63	33		23
one named here surface	21
one named here tool		17
one named here word	31
one need modal behind	-18	18
one need owed behind		17
one not ahead	5
one null copula before		11		-11
one null modal before	-7	14
one null modal behind	-7	20		-5
one null none no	-7
one null owed behind	-8	-22	20
one other copula before	-14	11
one other imperative behind	-12	33
one other modal before	23
one other modal behind		22
one other owed behind		24		-11
one other past before		17		-21
one other past behind	-6	-5	12
one right 
	-19	23	-5
one right #	-15	13
one right +	-36	-32	-10	45
one right ,	-4
one right :	17
one right ;	16	-7		-5
one right G	-11	-13		19
one right Q				18
one right a	-30	41
one right and	-13	26
one right are	-27	20	-10	15
one right as		13		-14
one right at	-11				22
one right be	54	-9		-8
one right before	10			-12
one right behind	6	-12	10	-9
one right both	21
one right but			11	-19
one right can	20
one right cause	-8	18		-8
one right do	-18	10		13
one right don't	26	-9		-8
one right down	9	-6		-48	19
one right each	-26	-15		17	16
one right for		13
one right from	-32	14	-4	9	12
one right get		9		-23
one right go	-5	24
one right has	23
one right he	23
one right i'd		10
one right i'll	17
one right i'm	14
one right i've	-22		20
one right if	-12	20
one right in	-21			26
one right is	-8	7	7
one right it	-4			14
one right it'll		11		-5
one right it's	-7			13
one right leave	12	-7
one right like	6
one right miss	-25	31
one right no	53	-39		-18
one right not		9
one right now	15	-10
one right of				7
one right or	8
one right order	-29	29		-10
one right out				11
one right over		-18		25
one right right	20
one right she	-7	-7		18
one right somebody	24	-5
one right than	-4	16
one right that	9				-19	15
one right the	-22	37
one right there		7		-13
one right they	-10	23
one right through	37
one right to	31	-8
one right too	-24	33		-16
one right under	-5			24
one right up	40	-19
one right use	27	-15		-20
one right we	28	-21
one right when		12
one right where	20
one right which		14
one right with	27
one right you	21
one say imperative behind	5
one say past behind	23
one say present behind		14
one says copula before	-18	23
one says copula before not	23	-28
one says imperative behind		5
one says imperative behind not	-6
one says modal before	-7	15
one says modal before not	31	-8
one says modal behind		33
one says modal behind not		10
one says none no	-10			6
one says none no not	8
one says owed before	6			-9
one says owed behind		16
one says owed behind not		-6			16
one says past before	-10			8
one says past behind				13
one says past behind not				16
one says present behind not	24			-10
one see imperative behind	-7	-6		22
one see present behind		12
one sized	-41	28
one then buy b				-7
one then buy pp	-13	-19	-14		32
one then have b	6			-6
one then have pp		-6		25
one then measure bp		10
one then measure i				-7	17
one then measure pp	-6	7
one then measure s				21
one then move b	10			-23
one then move i	10
one then move p		4
one then move pp	10			-13
one then move s	-8	17		-12
one then need b		15		-14
one then need s	33	-12		-13
one then other b		18		-4
one then other i				6
one then other pp		10		-20
one then other s					10
one then say b	6
one then say s	8
one then see b	19	-13
one then see s	7			-14
one then undefined has	9
one then undefined is	-6			5
one then use pp	19	-28
one then work bpp				22
one then work i	-6			17
one then work pp				26
one then work s	-4			6
one true		34
one use past behind		6
one verb add behind	-21	12		14
one verb ask behind	15
one verb be before	-14	11
one verb blow behind	-11	17
one verb bring behind	-8	29
one verb buy behind	-5	-18		-6	11	12
one verb clear behind	18
one verb come behind	-9	23
one verb cut behind		-14		13
one verb do behind			15	-16
one verb drop behind		-12		10
one verb find behind	25
one verb get before	-10	24	-6	-24
one verb get behind	-19		11
one verb give behind		16
one verb go behind		-9		-9	15
one verb grab behind	-23	35
one verb hang behind	-16			18
one verb have before	29
one verb lay behind				10
one verb leave before	37	-9	-34
one verb leave behind	14
one verb let behind	21	-9
one verb like behind	-9	18
one verb make behind	20
one verb move behind	4
one verb need behind		12
one verb null before		11		-11
one verb null no	-7
one verb open behind	21
one verb order behind					18
one verb owe behind	-9	8		-5	14
one verb pick behind		10
one verb pour behind	20
one verb pull behind	18
one verb put behind	-8			28
one verb run behind	17
one verb say behind	6
one verb scrape behind	6
one verb screw behind	-17			27
one verb scribe behind	19
one verb see behind	-8			18
one verb send behind	-19	22
one verb set behind	-10			26
one verb sister behind	-20			24
one verb sit behind	10
one verb slide behind	13
one verb stick behind				10
one verb swap behind	-38	24		24
one verb sweat behind	-39	-14	15		14
one verb take behind	7
one verb tell behind		4
one verb touch behind	15
one verb try behind	-5	-18	9	6
one verb use behind	9			-4
one verb want behind	-6	20
one whole clause	-11	8
one work imperative behind	-8			7
one work modal behind		12
one work owed before	15
one work owed behind	29
one work past before	-25			34
one work past behind				43
opens &	31			-16
opens +	19		-26
opens [					12
opens ]		-6		-5	16
opens alright	9
opens anyways	5
opens because	24
opens boss	15
opens cause	18
opens clause area				24
opens clause count	-28			7
opens clause length	-27	12		21
opens clause one	-18	14
opens clause pack	-32
opens clause volume	-30	7	12
opens clause weight	-41	9		17
opens hey	19
opens hi	17
opens jefe	9
opens now	17
opens ok	9
opens otherwise	26	-6		-6
opens please		27
opens plus	-9	35	-13
opens right	24
opens yes	8
opens ☐	-23	20		7
pack after bought here	-7	-31	-28	-24	39
pack after bought sentence	-29	-37	-40	-48	63
pack after have far	-27		20	-20
pack after have here	36			-43
pack after have sentence	-5	14	4
pack after need far		10		-22
pack after need here		59
pack after need sentence		23		-19
pack after none far	-41	8	22
pack after none here	-42	13			9
pack after returned far		6
pack after used here		-14		22
pack after used sentence	-25		13	7
pack bag	18			-12
pack before it ate	-33			33
pack before it back	-15	-6		-18		41
pack before it bought	-41	-9	-25	-29	50
pack before it came	-10	-20	33
pack before it have	-9		62	-20
pack before it lacks		46	-26	-39
pack before it need		47
pack before it used				22
pack behind it ate	-8		-35	12		16
pack behind it back	-42		7	-19		38
pack behind it bought	-12	-31	-26	19	15
pack behind it came	-16		37	-30
pack behind it have			6
pack behind it lacks	-12	26
pack behind it need	-53	44	15
pack behind it used		-5	6
pack beside are	23		-4	-13
pack beside arrive	10	-29	6	-23
pack beside be				12
pack beside blow		-20	-18	19
pack beside bring	-8	26
pack beside burn	-10			40
pack beside buy	-36		-9	-13	33
pack beside buy b nobody	15	-5
pack beside buy b other		34
pack beside buy b person	-38		-7	-6	27
pack beside call			-24	6
pack beside change	-6	21		-11
pack beside clear	-6	5	10	-19
pack beside come	-10	-5	13		14
pack beside consum	-25	-21	-24	37
pack beside do	-34		-31	8		16
pack beside eat	-9			25
pack beside figure		7		-7
pack beside fill	-9	-13	-4	20
pack beside find		-11	21	-24
pack beside finish	-6		-27	20
pack beside get	-13				4
pack beside go				18
pack beside grab	-28	39
pack beside hang	-50	-34		48
pack beside have			34
pack beside have b nobody	8	-5		-5
pack beside have b person	-21		51
pack beside have pp other	-12	-5	4	10
pack beside have pp person	22	-6	-4	-18
pack beside is			13
pack beside lay		-13	15	-14
pack beside leave			11
pack beside like			-17	18
pack beside measure p other	-7	-33	16
pack beside measure s other	-17	10	-37	-36	26
pack beside miss	-15	15	-15		15
pack beside mix		-19	-17	12
pack beside move			15	-33
pack beside move b other	11	5		-26
pack beside move p nobody	-12			36
pack beside move p other		-42		22		9
pack beside move p person				8
pack beside move pp other	7
pack beside move pp person	-13		32	-12
pack beside move s other	-24	22	4	-22
pack beside need		15
pack beside need b nobody		51
pack beside need b other		36	-8
pack beside need s other	-31	-8			23
pack beside need s person		4
pack beside nothing	-45		6
pack beside open		-22	6
pack beside order	13
pack beside other b nobody	-27	26		-5
pack beside other b other		42
pack beside other b person	6		-15	10
pack beside other i other	-20	25	-7	-18	5
pack beside other p nobody	-16	-30	-6	-29	39
pack beside other p other	-4	-44	-9	52
pack beside other p person	-5		40	-30
pack beside other pp nobody	-15	-28	11	-23	25
pack beside other pp person	-9	-21	20
pack beside pack	17	-26	-24	6
pack beside pick		15	-7	-8
pack beside pour		-18	-16	23
pack beside pull	36	-12	-14	-16
pack beside put	-30		8			6
pack beside return	-8	9		-14		4
pack beside roll	-23	-7	-28	29
pack beside run	-11	7		7
pack beside say b other	-42	49	-24	-25
pack beside set	-6	-6	-26	31
pack beside sit		-24	19	-17
pack beside stay		-23	25	-23
pack beside swap	-15	-6		17
pack beside take	-39			18		12
pack beside throw	-27	21
pack beside undefined has other	20	-18	-9	-17
pack beside undefined is other			9
pack beside undefined will other	-17	-18	-24	28
pack beside use				14
pack beside use b nobody				20
pack beside use b other	-38	-16	22
pack beside use b person	-15		12	4
pack beside use pp nobody				16
pack beside use pp person				38
pack beside want		25		-12
pack beside work b other	-41			25
pack beside work b person		-42	7	11
pack beside work bpp nobody	22	-20	-21
pack beside work bpp other	-31			24
pack beside work bpp person	-8	-52	4			12
pack beside work i other	4	-12	-13	6
pack beside work p other	-24			24
pack beside work p person	-13	10	-17	12
pack beside work pp nobody		-15	-8	36
pack beside work pp other			-7	38
pack beside work pp person		-9		39
pack beside work s other	-18		25	-22
pack box	5	7	-10	-5
pack bucket			9	-26
pack buy imperative behind		5
pack buy modal behind	-24	30
pack buy past behind	-25			-11	23
pack can			12	-16
pack carton	-10		12	-17
pack cartridge	10
pack cue ate	-20			34
pack cue back	-29			-5		23
pack cue bought	-45	-22	-46		60
pack cue came	-23	-21	36
pack cue have			68
pack cue lacks		29
pack cue need		57
pack cue used				13
pack drum	21	-17	-4
pack flat	48	-15	-15	-21
pack have present before			-23	-15	19
pack have present behind	-9		39
pack kept	-12	-22	37	-4
pack kit	9		-6	-7
pack left #	-33		20	-8
pack left ,	-41	-7		21
pack left .	-10	-7	23
pack left :	-45		25
pack left G	-56		-13	42
pack left N			-17	18
pack left Q	-25	45		-27
pack left T	-52	-35	23		19
pack left a		-14	-24	-24	31
pack left about	-10			9
pack left all	-5		9	-6
pack left also	-33	35		-36	-9
pack left and	-22	44
pack left at				7
pack left be	-19	12	-16	13
pack left bring		5	14
pack left but	34	-10	-20	-32
pack left buy	-19	27
pack left by	16	5	-9	-15
pack left eat	-5			23
pack left figure	6			-9
pack left from	23	5	-26	-29
pack left get	-72		38	-28	5
pack left go	-12	-17	-23	31	-14
pack left grab	-21	21
pack left have			11
pack left in	10			-17
pack left is	-6		5
pack left it	-39	12	29	-44
pack left it's	-24	7	-17	-35	24
pack left last		-12	17
pack left leave	-17	-32	43	-24
pack left like	11	-8
pack left me		13
pack left mix	-8	-16	-16	22
pack left of	18	-50
pack left off	27	-16		-11
pack left on		-25	-31	19
pack left only	-34	-12	30
pack left open			-4	11
pack left order	9
pack left out	32			-17
pack left over	20	-23	-15
pack left plus	-31			12
pack left pour				7
pack left put			-28
pack left return	-6	6		-16		5
pack left short	-11	27	-18
pack left so	-30	65	-19	-21
pack left take	-47			37
pack left that's	-4	-11	-51	42
pack left the	-13	-46				28
pack left there	-7		13	-22
pack left there's		-45	52	-52
pack left through				25
pack left to	-8	-33	16	5
pack left under	28			-11
pack left up		11	-17	-6
pack left use				17
pack left want	-9	34
pack left with	-13	-18	-57	48
pack length		18		-33
pack list have	10	-26	14	-29
pack list need	-13	48	-12	-21
pack list used	-22	-25	-26	39
pack measure present behind		-25		-29	15
pack more		52	-9	-14
pack move past before	-28		60
pack move past behind				18
pack move present behind			21	-21
pack named before area	-18	-19	-24	39
pack named before finish	-36
pack named before fixture	-10		9	4
pack named before part	37			-8
pack named before surface	-15		19
pack named before tool	-27		25	-10
pack named here defect		-12		11
pack named here finish	-56				6
pack named here fixture		5	-8		4
pack named here material	-45
pack named here part	-4			-35		8
pack named here surface		11		-26
pack named here word	-50			10
pack nameless		-19	-21	17
pack need modal behind		-11	15
pack need owed behind		20
pack need past before	-18	38	-26	-13
pack need present behind	-20	38		-19
pack not ahead	-28	40
pack null copula before		19	-40
pack null copula behind	-28	7	21
pack null imperative behind	-11	24
pack null modal before	13	-5	7	-20
pack null modal behind	-17	8	-27	15
pack null none no	-34
pack null present behind		-30	16	-25
pack other copula before		-13
pack other copula behind	-14			13
pack other imperative behind		20
pack other modal before	-37	19	19	-33
pack other modal behind		35	-15	-27
pack other past behind		-28	17		6
pack pail	-32	-26	40	-27
pack pair	11		-8	-4
pack pallet	27			-10
pack pointing	-8	18		-18
pack right 
	-11	37	-30
pack right #		42
pack right (	-15	8	10	-17
pack right +	-28		6	10
pack right ,	-36		7
pack right .				14
pack right :	30			-18
pack right ;	-39		37
pack right Q	-15			5
pack right T	-28	31	5
pack right and	-33	9
pack right are	-21	-30	32	-28	5
pack right around	-13	-13		21
pack right at	-11		-18		26
pack right be	12		-20	6
pack right before		18		-18
pack right behind		21	-24	-20
pack right but		-26	18	-7
pack right by		-11
pack right cause	5	9		-20
pack right come	-21	-21	7	-31	15	15
pack right down	-42	18		19
pack right for	-16	22		-9
pack right from		9		-38	15
pack right get	-14			14
pack right go	-21	-41	-42	59
pack right hang	-45	-14		38
pack right have	34	-7	-31	-22
pack right i'll	-23	12	-19
pack right i'm	-7	23
pack right in		-33	39
pack right is	-5	-6	6	9
pack right it		-31		23
pack right it's	31	-8		-14
pack right leave	-15		54
pack right more	-5		-23	17
pack right need	-20	23		-15
pack right no	35	-28	7	-20
pack right now	-33	-29	-29	18	22
pack right of	-28	5		7
pack right on			17	-24
pack right out	31	-17		-17
pack right over	-5	-46	23	-47	-6	17
pack right plus	-29	14
pack right short		10	-14
pack right sit	4	8	-6	-11
pack right so	13
pack right still	-27	-12	26	-8
pack right that	-35	-6	-31	14	-16	22
pack right the	-48	24
pack right then	-27	14	-26	18
pack right there's	-44		-14	51
pack right they	-32	16	24	-15
pack right to	-29	18		-13
pack right under		-33	11
pack right up	22	-38	-23	9
pack right use	-24	-7		39
pack right want	-24	35	-24	-18
pack right where	-9	-20	-20	26
pack right with		-32	-7	16
pack roll		31	-10	-11
pack say imperative behind	-6	18	-28
pack say present behind		14		-19
pack says copula behind	-30		11
pack says copula behind not	-9	19		-7
pack says imperative behind		43
pack says imperative behind not	6	-5
pack says modal before			11	-20
pack says modal before not	-23		-7	16
pack says modal behind		22	-8
pack says modal behind not	-14	-8	28
pack says none no	-30
pack says none no not	-22	37	-23	-29
pack says owed behind		28
pack says owed behind not	-4	13		-9
pack says past before	-4		10
pack says past behind				18
pack says past behind not	-7			14
pack says present before			-18	-11	14
pack says present behind	-22		13
pack says present behind not	5
pack set	41	-9	-33	-39
pack sheet	22		-20	-25
pack sized	-28	10
pack sold so false	-34
pack sold so true	-50
pack stick	28	-22		-16		6
pack strip			-24	10
pack then buy b		-20	17
pack then buy pp	-33	-30			28
pack then have b		8	-9
pack then measure i	10	-14
pack then measure p		5		-12		12
pack then measure pp	-12	6		7
pack then measure s	26
pack then move b	-30	-19	27	13
pack then move i			11
pack then move p	-30		-48	51
pack then move s	-21	-15	16
pack then need b	-25	6	22
pack then need pp	-32	38		-9
pack then need s	-21		24
pack then other bpp	-16	5	-22	15	-12
pack then other i	16			-24
pack then other p	-8	-34	-8			35
pack then other pp	11			-25
pack then other s	13		-17	-29	17
pack then say b	-10	17
pack then undefined has	-22	8		-8	17
pack then undefined is	-14		6
pack then undefined will	-27	47
pack then use b			-11	5
pack then use pp	-10		-13	27
pack then work bpp	-24		9	9
pack then work i	-33		23
pack then work pp		-11
pack then work s	-34	14		10
pack tin	11			-27
pack tub	57			-6
pack tube		8		-33
pack use imperative behind	-10			35
pack use past before	-19			32
pack use past behind				36
pack use present behind	-25	-6		27
pack verb be before		-13
pack verb be behind	-14			13
pack verb blow behind	-4			7
pack verb bring behind		7
pack verb burn behind				21
pack verb buy behind	-9				18
pack verb can before	13	-5	7	-21
pack verb change behind	-10	21		-5
pack verb come behind	-29	-18	5	-26	27
pack verb do behind	-5	17	-4
pack verb figure behind	12
pack verb fill behind	-9			18
pack verb find behind		-11	21	-24
pack verb finish behind	-12	-25	-25	33
pack verb go behind				20
pack verb grab behind	-28	43
pack verb hang behind	-16		5	13
pack verb have before			-23	-15	19
pack verb have behind			36
pack verb leave before	-18		60
pack verb leave behind		-19	24	-13
pack verb make behind		-25	-11	18
pack verb mix behind		-6	-8	12
pack verb need before	-22	35	-11	-11
pack verb need behind		7
pack verb null before		19	-40
pack verb null behind	-26	6	24
pack verb null no	-34
pack verb open behind			-7	7
pack verb order behind	18	-9
pack verb pick behind					14
pack verb pour behind				7
pack verb pull behind	18	-12	-13
pack verb put behind	-21	17				13
pack verb run behind	-14	-23		7		17
pack verb say before		12	-14	-22
pack verb send behind	-34	13	25
pack verb set behind	8	-27	-9
pack verb sit behind	24	-17	-18
pack verb take behind	-23		6	6
pack verb tape behind		15	-10	-8
pack verb throw behind	-28	15	-8	-6	13
pack verb use before				5
pack verb use behind				41
pack verb want behind		25
pack whole clause	-46
pack work imperative behind	-11	17
pack work owed behind	-27	34	-7	-25	9
pack work past before		-33		18
pack work past behind	-10			39
pack work present before	-22	21
pack work present behind	-29			46
plural area		-14	-14	20
plural count	-30			13
plural length	5
plural volume	-24	5
plural weight	-37	32
pointer after need here	20	-8
pointer after need sentence		-6				19
pointer after none sentence			9
pointer after used sentence				7
pointer before it have	6
pointer before it need	-10	-14	17
pointer before it used	-7			16
pointer behind it have	14
pointer behind it used	29
pointer beside nothing	15
pointer beside put	-7			14
pointer beside work bpp person	-14			19
pointer beside work pp other	23			-11
pointer cue have	16
pointer cue need		-11	10
pointer cue used				7
pointer flawed						10
pointer left Q	-5	-6		21
pointer left the	12
pointer name flawed	-6					8
pointer named before material				6
pointer named before part			9
pointer named before word	20
pointer null copula behind	8
pointer null none no	23
pointer right and	26			-16
pointer says copula behind	21
pointer says imperative behind	27	-5
pointer says none no	23
pointer says past behind	-18			12
pointer then undefined is	-12			17
pointer then work pp	16
pointer verb null behind	8
pointer verb null no	23
pointer work past behind	-5			12
pointing	-32	9		15
right 
		13
right 
 *	11	-27	-15	14
right 
 G	-18	12	-6	8
right 
 N	7			-6
right 
 Q	-43	20	26	-28
right 
 •	22
right !	17
right ! !	12
right # #		6
right # N					6
right &				8
right & Q	-6			15
right '	20
right (	-11			-13
right ( G	-17	25	-10	-15
right ( Q	9	-34	19
right ) 
	-17		12	8
right ) ,	-4			8	10
right ) .	8
right +	-16
right + G		8
right + Q	-31	22		11
right + a	-26	27
right , N					6
right , a	-7	25		-18
right , about				15
right , all	-15	-28	-20	43
right , and			-5
right , ask	8
right , back	14
right , be	17
right , both	8
right , bring	24			-20
right , but	-13	-27	40	-35
right , buy	15	-18		-7	13
right , change	24			-8
right , check				13
right , clean	5
right , clear	6	10	-6	-9
right , code		10
right , cover	20
right , cut		-13
right , cut out	7
right , do	-34		14	26
right , drain	-15			23
right , dry	-13			33
right , epoxy				10
right , fill	22
right , find				9
right , fine	11	-15
right , fix		-13		7
right , get	-15				8
right , glue				11
right , go	-24		18	-5
right , good	-11			18
right , have	17	5	-17	-23
right , hit	-4			16
right , hold				11
right , i'll	8
right , i've	19	-16
right , in					13
right , is		-15			12
right , it's	-6		15
right , kitchen	33			-19
right , leave	18
right , level	8
right , move	19
right , need			19	-5
right , new	37			-10
right , none	7	-25	-21	12
right , not					13
right , now	7
right , on	21	-23	16	-33
right , open		-14	17	-10
right , order	7
right , owner		10		-8
right , pack	12
right , pull	13
right , put				10
right , quiet	-17	-14		25
right , raise	20	-6
right , rehang	14
right , reorder	13
right , replace	7
right , same	-40	5	12	11
right , sand				13
right , screw	12	-21	-15	8
right , send	29
right , should	27	-4
right , so	33
right , still	26			-10
right , swap		-7		11
right , take				5
right , tape	30			-19
right , tell	26	-16
right , that				-15	21
right , the		5
right , then	21	-30	7	-16
right , they			-14	-18		17
right , trim	9	-6	-8	5
right , unit	10
right , use	10
right , want	5
right , we		-5		6
right , which	22
right , white	-24	25
right , will		9
right , work	26			-13
right , you		7
right - G	18
right - Q				9
right - get	24
right . 
		-39	29
right . #		19
right . ,		-8		8
right . N	5	-14	-6	16
right . Q		-20		5
right . T		5
right . all	-12		19	-23
right . also		22		-7
right . and	-8	28	-8	-25
right . ask	17
right . back		7
right . box				16
right . bring	25	-31	5
right . buy	17	-11
right . call	5
right . customer	17
right . cut		-9		17
right . find	-6			14
right . finish	27
right . fit	23			-6
right . floor	-13		14
right . for		-7		5
right . get	-12	-24	12		17
right . glue	21	-9
right . go		9
right . good	-9			17
right . hall	-6			6
right . have			-17
right . he	17
right . it	18		-19
right . kitchen		9
right . miss	16
right . need		-10
right . new	15
right . no			15	-15
right . nobody	-9	-11		13
right . not		11
right . nothing	20
right . ok	19
right . old	9	4		-13
right . on	10			-11
right . open			17	-4
right . order	-24	-11		28
right . please		-9	19	-5
right . pull	17
right . put	18
right . rehang	12
right . return	14			-6
right . sand	19
right . screen	26	-14		-8
right . screw		-23	19
right . send		-20		17
right . she	-18	-5		29
right . somebody	12	7	-5	-13
right . stain	13
right . still	33	-26	-18
right . swap	10	-9
right . take	-23	9	15	-23
right . tank	13
right . tell	17		-11
right . tenant	-15		19
right . the	-4			28
right . there's				11
right . they	23	-11
right . we	8
right /	-14		8
right / G	-16	24		-20
right : 
	17
right : G	15
right : hinge	27			-16
right : kitchen	17
right : the	12
right : use	16
right ;	-6		22
right ; G	-44		41
right ; i	-11	18
right ; the	15
right =			12	-8
right = Q	17
right ?	40	-15
right @	-9				4
right @ Q	-21			8
right G	-12			10	7
right Q 
	5
right Q #			10
right Q ,	5
right Q -		7
right Q .	44	-18
right Q G	-13	-20		33
right Q Q		22		-24
right Q all	25			-12
right Q and	24
right Q by	20
right Q for	-17	19
right Q i	19
right Q in	21
right Q it	11
right Q leave	11		-13
right Q of	8	-4
right Q off	6
right Q on	14
right Q only	7	-6
right Q short	12
right Q so	12
right Q the		-22		18
right Q to	23
right Q wide	5
right T 
	10
right T #	18
right T ,			7
right T G		9		-5
right T N	16
right T Q	12
right T after	18
right T before	6
right T for	16
right T i	17	-7
right T if	34	-25
right T the	37			-28
right T to	-11	17
right T when	-13	25
right T with	23
right a Q	-32	43
right a little	11
right about the	19
right above	7
right above the	8
right across	28
right across ,	8
right across the				5
right after	18
right ain't	13
right all ,	15
right all Q	8
right all around	31			-11
right all in	14
right all over	15
right all round	18
right all the	21
right all up	-10			17
right along				6
right along the				8
right already			15
right already #	33	-8		-7
right also		9
right also the	27			-13
right and G	-28	34
right and N	-28	20		4
right and Q	-45	22
right and T	9	6		-18
right and a	-27	8
right and about	-23			13
right and clamp	10
right and do		10
right and don't	7			-6
right and drop	7
right and find	15		-6
right and for	-14		22
right and get		11
right and give	12	-4	5	-14
right and go		-7	20	-20
right and half		-23	-7	18
right and hang	12
right and have				14
right and he	8
right and he'll		-16	11
right and he's	-14	21
right and hit	24			-16
right and i'd	-27	-9	21	16
right and i'll	-30	35
right and i've	-19		-16	18
right and if	7
right and is				10
right and it	8
right and it'll	-14	5		9
right and let	5	11	-9	-11
right and mud	17	-6
right and my	12	-11		7
right and need		-11	9
right and no	28	-19		-5
right and nobody	17
right and order	31
right and pack	-16	14
right and paint	31	-15		-23
right and plug	-8			18
right and pull	11
right and put		-18		13
right and redo	18
right and reset	9
right and run	25			-17
right and screw	30			-15
right and seal				12
right and set	25			-13
right and she's		-12		12
right and somebody	18	-8
right and tape	-11			24
right and tell		24		-15
right and that	9			-16
right and that's	-21	16
right and there's				28
right and they		-16	-7	-18	21
right and they're	-17	-13		31
right and we	-9		18	-24
right and we're	10
right and while	-8	26		-21
right and you				6
right another	16
right any	10
right anyway	25
right are Q	24
right are all	24
right are at	26
right are crack	31	-5		-12
right are cut	8	-4		-16
right are do	27
right are down	-8			16
right are hang	-32			41
right are in	-24	-19	35
right are on				14
right are paint	28			-18
right are screw	25			-13
right are set		-5
right are shot	15
right are spray	7
right are up	-13	-6		33
right aren't	9		-9
right around it	-22	33
right around the		-6		15
right arrive			11
right arrive ,		-11	22	-8
right arrive with	-41		32			20
right ask	17
right at G	19
right at N					11
right at it				8
right at mrs	15
right at number	6
right at the	9
right back				-9		20
right back on		16
right bag	-12	19
right be	7
right be Q	28
right be bend	28			-12
right be cut	19
right be hang	14
right be in	21			-5
right be just	10
right be leak	-11	19
right be loose	17
right be miss	14
right be never	12
right be off	5
right be pack	12
right because						11
right because the						7
right before i		14
right before it	-8	13
right before that		11
right before they		8
right before we	23
right behind is	16			-5
right behind the				-5
right below	13
right bend	17
right bend ,	16
right between	26
right bind	7
right bind on	9
right block	10
right bolt	5
right both	-7			27
right both G	12
right both side				11
right box	5
right break ,	-20			11
right break in	20
right bring	5			-7
right bring Q		-23	17	-16
right bubble	6
right bury	8
right bust	31			-8
right but	6
right but Q			14	-14
right but i	9
right but it	18
right but it's	-5		17
right but the	36			-8
right buy	8				-26
right buzz	14
right by G	37	-19
right by N	-9	16
right by the	10
right call	32	-6
right call the	16
right can go	31		-13
right can't		6
right can't go	15
right cap				4
right catch	6
right caulk	11
right cause i		16		-4
right change	-12			26
right check	6
right chew	13
right chewed up	7
right chip	13
right clean	6
right clip	20
right come Q	-24		20
right come T	-6				9
right come and			9	-10
right come back	27
right come down	18
right come from	6
right come off	21	-7
right come on	24
right come out	34
right come through	18			-6
right come to	10
right come up	36
right come with	-12		21	-5
right core				12
right crack ,	-9	16
right crack .	30
right crack right	10
right crook	10
right cup	16
right cure	6
right curl	14
right dead	24
right deliver		-9	20	-12
right dent	20
right didn't				12
right dig	6
right do ,	40
right do .	33
right do it	-49	47	-17
right do not	21
right do that	13
right do the	23
right doesn't	16
right don't let	-12			18
right down ,		-16		19
right down .	28
right down Q	19
right down T	23
right down and	44			-7
right down by	30			-23
right down from	18
right down in	25
right down it				9
right down on	-5	19	-7	-6
right down there		-9		11
right down to	10
right drill	17
right drill at	19			-10
right drip	5
right drip ,	8
right drop	14
right dry	22
right dry ,	12
right dump	8
right each	-5	-11		18
right each side	-15			20
right eat	14
right every	14
right every Q	16
right extra	-27	10	9
right fill	15
right finally	13
right find	15
right fine	8
right fine but	7
right finish	17
right finish ,		-7	-13	15
right fit	-14			32
right fit ,	-38			45
right fix	-21			33
right fix ,	-26	-12		31
right flash	-6	-22	-10	21
right float	25	-9		-16
right flush	16
right for G	-33	29
right for N	-21	-18	-19	-20	34
right for Q	9
right for T	19
right for it		21		-6
right for me	-12	23
right for now	-14			29
right for that	-30	28	10	-25
right for the	-5	12
right frame	14
right from Q	-23			27
right from T			13	-6
right get Q	7
right get a	25
right get it	23
right get its	6
right get me	40	-27
right get no		8
right get the	-14	21
right get to	-13	20
right give				8
right glue	-17			34
right glue and				11
right go #	22
right go ,	-12	-6		29
right go .	-4		-15	25
right go Q	27			-7
right go T	8
right go and	-24	-19	-31	37
right go back	5
right go in				25
right go into	-23	-10	-22	33
right go off	21
right go on				11
right go through	23
right go under	20			-17
right gonna be	-4	16	-9
right good	-31	-23	35	-9	8
right grab	16	-4
right grout	21
right hand	-9	-6		18
right hang				13
right hang ,	-15			35
right hang .	23		-8	-6
right hang Q	23
right hang and	27
right hang but	30			-6
right hang by	14
right has	10
right has Q	6
right has a	21
right has no	27			-8
right hasn't		11
right have	6
right have Q	15
right have a	19
right have come			9
right have go				9
right have let go	8
right have no	26
right have the	29
right have to						6
right he say	14
right he want	12
right he'll	22
right he's get	-7		17
right head	-18	10		8
right her	12
right here	-5		30
right here .	-16		22
right him	8
right his	-11	20
right hit the	7
right hold				6
right hold Q	5
right hold it				8
right hold up	10
right hollow	20
right hook	6
right hook up	6
right hum ,	16
right hum but	-10	17
right i ain't		15	-16	-15
right i already	-9	25		-10
right i am	14
right i bring	-21		16	11
right i buy	-17		-9	-22	31
right i can	32	-19		-4
right i check	-5	12
right i count	-14	-6	27	-13
right i cut	40
right i cut out		-13	17
right i didn't	20	-8		-7
right i dig	13			-6
right i do				10
right i don't		9		-14
right i drill	5
right i fill	10
right i find	9
right i finish				4
right i give	-13	-14	-12	-9		23
right i glue	-13			18
right i go	21
right i gotta	-11	19		-12
right i grind	12
right i have	-21	-13	32
right i know	14
right i lay	33			-14
right i leave		-4	11
right i make	9
right i measure		10
right i need		19		-14
right i no	16
right i open				10
right i order		-18	-10	-22	21
right i put	7
right i run	27	-6
right i sand	7
right i say	20
right i scrape	22			-7
right i screw	6
right i stick	-6	-17	19	-22
right i swear	13
right i take	28
right i think				-9
right i use	-10		-6	30
right i want	-25	21	-9	12
right i will	38	-27		-8
right i'll be	15
right i'll bring	20
right i'll do	27	-18
right i'm Q	27
right i'm gonna	23	-12
right i'm not	5
right i'm out				7
right i'm short	16
right i'm stick	10
right i've			18
right i've get	-11		32	-5
right if the			10
right if you	16
right in #	-16	7		14
right in ,	-41	-6		70
right in .		-7		15
right in G				6
right in N	14
right in Q	47			-4
right in T	10	7	-11	-5
right in a	4
right in about	9
right in all				5
right in and	-17		-14	46
right in at				16
right in but	-12		-10	25
right in for			15	-4
right in front	19
right in hall	23
right in it				18
right in living room	10
right in my	-7	-6	27	-5
right in salon	13
right in so				14
right in that	22
right in the			5
right in the kids	28		-12	-18
right in there	5			12
right in van	-29	-5	34	-15
right in with	-20			28
right inside			10
right install	25
right into	-5	-17		28
right is G	14
right is N	17
right is Q	4
right is T	22
right is all	24
right is at		-19	12
right is bad	29			-18
right is bend	11
right is black	7
right is break	6	5	-6	-8
right is chip	11
right is crack	28
right is cut	20
right is do	27
right is dry	12
right is empty	-29	17	-13	17
right is fine	21
right is finish				11
right is for	26	-6
right is go	-9	-6		25
right is gonna	-5	18	-9
right is good	18
right is hang	28
right is hard	5
right is in			9
right is leak	16
right is leave	-26	-7	15	16
right is mark	5
right is miss	6
right is not	24
right is off	19
right is only	25
right is out	26
right is plumb	24			-10
right is put	-26	-11		34
right is ready	13
right is run	11
right is set	17
right is short	18
right is sit	14
right is split	22
right is strip	12
right is tear	7
right is the	33
right is to	10
right is wavy	6
right is wet	9
right it #	-14	-13	23	-11
right it ,	28
right it .	21
right it G	5
right it Q	11
right it T	17
right it back	13
right it by	6
right it down	6
right it have	17
right it in	8
right it is	19
right it must	-12	18
right it need				7
right it on	12
right it run	14
right it take	-23	-6	-12	38
right it the	25	-5		-7
right it up	25
right it want				12
right it when	-17			22
right it won't	13
right it'll		7
right it's about	26
right it's get	22
right it's hang	21
right it's in	-11		21
right it's not	-12			6		13
right it's the	9
right just	31
right keep	8
right land			8
right lay	-14			24
right leak ,				11
right leak at	15
right leaning	-11	-13	14	-20		18
right leave			53
right leave 
			21
right leave #	-41		57
right leave ,	18
right leave .			16
right leave and	-39		59
right leave for	27		-23
right leave from	8
right leave in	-33		26
right leave it		-12	-14	11
right leave of	5
right leave on			6	-16
right leave over	-12		50	-6
right leave side	23		-10
right leave so	-18		26
right let	4
right level	-7			15
right lift	4
right like the	13
right look	5
right loose			16
right lose		16
right lower	10
right match	-25	19	-5	8
right me	25
right me Q	11
right measure	15
right measure Q	9
right miss	4
right miss 
		7
right miss ,		12
right miss .	38	-18		-13
right miss a	14
right miss at	18
right miss from	22
right miss on	31	-10		-17
right more	-7	30
right more #	-34	34
right more ,	-33	36
right more .	-20	26
right more and	-35	40
right more in	-14		17	-6
right more on	15	-37	-20	-6	16
right more to	37	-21	-10	-23
right mount				8
right my	25
right nail	7
right near	21
right near the	21
right need ,	-37	49	-22	-19
right need .	-21	38	-20	-21
right need T	16
right need a	38	-16
right need its	5
right need to	13
right never				9
right new	-35	5		16
right next		16
right next .	-5	13
right next time	-16	10
right next to	4			-15
right no	6
right no .	-42	35		9
right no G	-39	32	-15
right no have	23			-4
right no i	19	-28	22	-22
right no more	-7			14
right no sorry	23	-19	-5
right no the		7
right no wait	9	-4
right nobody	-5		4
right not Q		8
right not before	21
right not on		9
right not start	5
right not the	28			-13
right not to	7
right notch	22
right now ,	29	-11
right now .	38			-4
right now G	12
right now Q	-4			12
right now and	-5	-12	-9	-9	23
right now i	21
right now is	-30			40
right now it	-17	-15	-17	32
right now she	-13	-11		19
right now so	5
right now the	23
right of Q	-22
right of T	-19			25
right of a	18
right of em	-10	-18	-17	22
right of it			12	-13
right of my	19
right of that	-9	12
right of the	14
right of them				7
right of those	-10	33	-19	-27
right off	12
right off T	16
right off about	14
right off and	14
right off in	9
right off it	20			-7
right off the				9
right off to	19			-11
right oh		10
right oh and		14
right ok	18
right ok 
	17
right ok ,	9
right ok .	10
right okay	19
right on #	20
right on ,	-7			23
right on .				38
right on G		-20	20
right on N	15
right on Q	28
right on a	40	-22
right on all				5
right on and	7
right on backwards	18
right on both	25			-15
right on ceiling	20			-10
right on every	32			-20
right on hand		-27	39	-28
right on her	32		-8	-23
right on in	33
right on it	5
right on its	11
right on me	-25	33		-10
right on my	9			-12
right on order	-61				63
right on site	-29	-15	44	-36
right on so	-7			21
right on that	-15		5
right on the	12
right on there	-31	-5		37
right on top	29			-22
right on truck	10	-13		-11
right on your	-7	16		-5
right once	8
right only	11
right only Q	15
right open ,				10
right or	12
right or a	30	-17
right or the	12
right order				-9	21
right order ,	-21		-12	-20	25
right out #	14
right out ,	33			-11
right out .	22
right out Q	27
right out T		15
right out and	25
right out at	7
right out back	15
right out front	10
right out in	-8			14
right out of		-14		26
right out of plumb	5
right out the	22
right out to	10
right over ,	-32	-22	13	-20		24
right over Q	15
right over to	22			-17
right pack	-13	20		-5
right pass	5
right patch	20
right peel		12
right pick	26	-16
right pipe	19			-12
right pitch	-15	-6		19
right place	20
right please	-25	36	-6	-9
right plug	21
right plug solid	17
right plumb	28			-22
right plus	-37	18		14
right plus Q	-26			7
right point	17
right pop	15
right pull	9
right pull Q	7
right pull and	13			-14
right pull out	22
right put	29
right rack	7
right rattle	12
right read	15
right read Q	4
right rehang	12
right replace	-6			23
right replace ,				10
right require		14	-13	-11
right right	31
right right down	7
right right where	14
right rip			12	-5
right rock	11
right roll	-19		21
right rough	5
right rub	15
right run Q	7
right rust	18
right rusted through	21			-9
right sag	6
right sag ,	10
right sag Q	5
right sand		-17	14	-9
right say Q	23
right scrape	12
right scratch						16
right screw	-8			19
right scribe			-8	4
right seal		8
right see	11
right seize	14
right send	10
right set	28
right set and	16
right she say	23	-16
right she want	11
right she'll	25		-18
right she's	9
right shim	14
right short		30		-13
right short ,	23		-17	-29
right short .	-37	50	-26	-18
right short Q	31	-11
right short by		12
right short on	15	-6	-6	-11
right short so				-8
right shot	-10	17
right shot so	22
right should	-7	19
right show up						9
right since the	-33	10		24
right sit	12
right sit in	-16		32	-12
right sit on	18		-10
right slam	8
right snap	24
right so G	10		-7
right so Q	13	-34
right so T	16
right so a	32
right so ask	-7	17
right so bring	-26	10	8
right so buy		6	-17
right so call	28	-23
right so don't	21
right so either	29	-11
right so get	-29	5		5	12
right so grab	-7	11
right so i	6
right so i'll	-5		9
right so i'm	34
right so i've	4
right so is	21			-7
right so it	30
right so it's	11
right so leave	4
right so no	5		-15
right so nobody	13
right so order	11
right so pick	14
right so put	13
right so she	16
right so she's	10
right so somebody		-4	13
right so that's	20
right so the	18
right so there's	35		-21
right so they	18
right so they're	18
right so those			5
right so we	29		-14
right so we're		-5	11
right some	9
right somebody leave	21	-10
right sound	18
right space	18
right spare	-41	-9	46	-22
right split	16
right spray	21			-6
right square	-13	21
right squeak	10
right stain	13			-24
right start	18
right stay	7		11	-18
right stick ,	-4			12
right stick out	9
right still			24
right still has			6
right still in	-9	-13	31	-18
right still need	19
right still on	-10		42	-42
right still to	34
right still want	25
right stretch	12	-9
right strip .	-10			9
right stuff		13
right swap				16
right swap ,	-9			20
right sweat	-12	19		-8
right swell				13
right swing	6
right take	9					9
right take Q	21
right take the	5
right tape	-13			10
right tear ,	18
right tear at	-9	17
right tell	-13			12
right test	11
right than	21		-8
right than the	28		-20
right that G	19
right that N	6
right that be				-16	-17	33
right that before	16
right that come	30		-9	-7
right that go	-4		16
right that is	14		-6
right that's Q	32			-5
right that's a	17
right that's all		5
right that's the	-26	-8		30
right the G		5
right the N		5
right the Q	-33	33		-15	12
right the back	21	-7		-4
right the box	32	-6		-15
right the ceiling	14
right the floor		-17		16
right the guy	13
right the hinge		-18	12	-9
right the inspector		20		-8
right the kitchen	11
right the last	20
right the new		19	-15	-13
right the old	-18		-12	35
right the only	12
right the other	-15	-6	18	-12
right the plumber	18
right the size	21
right the top	6
right the wall	-12			20
right the whole	7
right their	14
right them	5
right then	-5	7		8
right then Q	11
right then the		-12	-5	14
right there .	-8	14
right there be	-8			19
right there is	18
right there the	14
right there's				18
right there's no				12
right they give	-7				14
right they go					14
right they say		19
right they send	-12		15
right they want	30
right they're			10
right they've	-24	22	13	-8
right this time	10
right through it	18
right through the				17
right throw	9
right til	6
right till the	18
right till then	-5			16
right to G	26
right to Q	38
right to a	7	-28	-26	7
right to be		25		-9
right to come	-12	17
right to corner	13
right to cut		-8	14
right to do	22
right to get	-31	34	-9	-16
right to go	31	-12		-43
right to it	23			-10
right to look	16
right to match	-4	11
right to see	24	-17
right to the						10
right to the yard	-16	-12		-14		21
right to wall	22
right to you	7
right too	-9		7
right too #	-7			9
right too .	17
right too so				11
right top	10
right top ,	5
right touch	20
right trim	-15			23
right trim out	-20	-7		26
right trip				5
right trip the	-17			20
right tuck				11
right turn	-6		10
right under G	19
right under Q	25
right under it	18		-10
right under there	14
right underneath	5
right unopen	-32	-7	35	-14
right until T	15
right until the	21
right up ,	-35	-12		56
right up .			-11	11
right up Q	21
right up T	17
right up and	25
right up at	19
right up by	20
right up here	10
right up on		-5		8
right up the	24
right up there	37	-20		-13
right use				35
right use ,	-19			41
right use .	-40			51
right use Q	8
right use up	29			-15
right wait	25			-6
right want a	15
right want to		-23	19	-15
right wasn't	6
right waterlog	14
right we			8	-6
right we get	6	-16	18	-28
right we go	24
right we have			8
right we need	22
right we use	14			-20
right we'll				5
right we're	-5
right when the	6
right when you	7
right which i			13
right which is	27
right while	-6	6
right while you're	-23	30
right will do	-17	15	8	-27
right wire and	8
right with G	9
right with Q			-6	15
right with it	34
right with me		11	-5
right with no	22
right without	13
right won't						6
right won't come	18
right won't go	19
right won't sit	-19					25
right would		6
right wouldn't	13
right wrap	13
right you	22
right you can	6
right you can't	13
right1 
		13
right1 !	17
right1 #.		6
right1 &				8
right1 '	20
right1 (	-11			-13
right1 +	-16
right1 /	-14		8
right1 ;	-6		22
right1 =			12	-8
right1 ?	40	-15
right1 @	-9				4
right1 G	-12			10	7
right1 above	7
right1 across	28
right1 after	18
right1 ain't	13
right1 along				6
right1 already			15
right1 also		9
right1 another	16
right1 any	10
right1 anyway	25
right1 aren't	9		-9
right1 arrive			11
right1 ask	17
right1 back				-9		20
right1 bag	-12	19
right1 be	7
right1 because						11
right1 below	13
right1 bend	17
right1 between	26
right1 bind	7
right1 block	10
right1 bolt	5
right1 both	-7			27
right1 box	5
right1 break.		13
right1 bring	5			-7
right1 bubble	6
right1 bury	8
right1 bust	31			-8
right1 but	6
right1 buy	8				-26
right1 buzz	14
right1 call	32	-6
right1 can't		6
right1 cap				4
right1 catch	6
right1 caulk	11
right1 change	-12			26
right1 check	6
right1 chew	13
right1 chewed up	7
right1 chip	13
right1 clean	6
right1 clip	20
right1 core				12
right1 crook	10
right1 cup	16
right1 cure	6
right1 curl	14
right1 dead	24
right1 deliver		-9	20	-12
right1 dent	20
right1 didn't				12
right1 dig	6
right1 doesn't	16
right1 drill	17
right1 drip	5
right1 drop	14
right1 dry	22
right1 dump	8
right1 each	-5	-11		18
right1 eat	14
right1 every	14
right1 extra	-27	10	9
right1 fill	15
right1 finally	13
right1 find	15
right1 fine	8
right1 finish	17
right1 fit	-14			32
right1 fix	-21			33
right1 flash	-6	-22	-10	21
right1 float	25	-9		-16
right1 flush	16
right1 frame	14
right1 give				8
right1 glue	-17			34
right1 good	-31	-23	35	-9	8
right1 grab	16	-4
right1 grout	21
right1 hand	-9	-6		18
right1 hang				13
right1 has	10
right1 hasn't		11
right1 have	6
right1 he'll	22
right1 head	-18	10		8
right1 her	12
right1 here	-5		30
right1 him	8
right1 his	-11	20
right1 hold				6
right1 hollow	20
right1 hook	6
right1 i've			18
right1 inside			10
right1 install	25
right1 into	-5	-17		28
right1 it'll		7
right1 just	31
right1 keep	8
right1 land			8
right1 lay	-14			24
right1 leaning	-11	-13	14	-20		18
right1 leave			53
right1 let	4
right1 level	-7			15
right1 lift	4
right1 look	5
right1 loose			16
right1 lose		16
right1 lower	10
right1 match	-25	19	-5	8
right1 me	25
right1 measure	15
right1 miss	4
right1 more	-7	30
right1 mount				8
right1 my	25
right1 nail	7
right1 near	21
right1 never				9
right1 new	-35	5		16
right1 next		16
right1 no	6
right1 nobody	-5		4
right1 notch	22
right1 off	12
right1 oh		10
right1 ok	18
right1 okay	19
right1 once	8
right1 only	11
right1 or	12
right1 order				-9	21
right1 out of plumb	5
right1 pack	-13	20		-5
right1 pass	5
right1 patch	20
right1 peel		12
right1 pick	26	-16
right1 pipe	19			-12
right1 pitch	-15	-6		19
right1 place	20
right1 please	-25	36	-6	-9
right1 plug	21
right1 plumb	28			-22
right1 plus	-37	18		14
right1 point	17
right1 pop	15
right1 pull	9
right1 put	29
right1 rack	7
right1 rattle	12
right1 read	15
right1 rehang	12
right1 replace	-6			23
right1 require		14	-13	-11
right1 right	31
right1 rip			12	-5
right1 rock	11
right1 roll	-19		21
right1 rough	5
right1 rub	15
right1 rust	18
right1 rusted through	21			-9
right1 sag	6
right1 sand		-17	14	-9
right1 scrape	12
right1 scratch						16
right1 screw	-8			19
right1 scribe			-8	4
right1 seal		8
right1 see	11
right1 seize	14
right1 send	10
right1 set	28
right1 she'll	25		-18
right1 she's	9
right1 shim	14
right1 short		30		-13
right1 shot	-10	17
right1 should	-7	19
right1 sit	12
right1 slam	8
right1 snap	24
right1 some	9
right1 sound	18
right1 space	18
right1 spare	-41	-9	46	-22
right1 split	16
right1 spray	21			-6
right1 square	-13	21
right1 squeak	10
right1 stain	13			-24
right1 start	18
right1 stay	7		11	-18
right1 still			24
right1 stretch	12	-9
right1 stuff		13
right1 swap				16
right1 sweat	-12	19		-8
right1 swell				13
right1 swing	6
right1 t area.	21
right1 t defect.	8
right1 t finish.	-14	11		7
right1 t fixture.				14
right1 t material.	-44	36	-16	18
right1 t part.	-16	-38	5		18
right1 t role.	-16	19		-6		5
right1 t surface.	37	-10		-27
right1 take	9					9
right1 tape	-13			10
right1 tell	-13			12
right1 test	11
right1 than	21		-8
right1 their	14
right1 them	5
right1 then	-5	7		8
right1 there's				18
right1 they're			10
right1 they've	-24	22	13	-8
right1 throw	9
right1 til	6
right1 too	-9		7
right1 top	10
right1 touch	20
right1 trim	-15			23
right1 trip				5
right1 tuck				11
right1 turn	-6		10
right1 underneath	5
right1 unopen	-32	-7	35	-14
right1 use				35
right1 v have.	6
right1 v return.	5
right1 v say.	7
right1 v see.	17
right1 v use.				35
right1 wait	25			-6
right1 wasn't	6
right1 waterlog	14
right1 we			8	-6
right1 we'll				5
right1 we're	-5
right1 while	-6	6
right1 without	13
right1 won't						6
right1 would		6
right1 wouldn't	13
right1 wrap	13
right1 you	22
right2 
		-7
right2 !	17
right2 #.		5
right2 &		-7		21
right2 (				-19
right2 )	-7	6	9	-22
right2 *	11	-27	-15	14
right2 +		4
right2 1	6
right2 :	46
right2 ?	19
right2 @	-8			23
right2 about	17
right2 above	26			-5
right2 across	6
right2 adjust	14
right2 again	29
right2 ain't		11	-15	-13
right2 air	29			-5
right2 along	-14	21		-5
right2 already			16	-15
right2 also		11
right2 an		9
right2 another		-6	14
right2 any	8
right2 anything		10		-6
right2 anyway	13
right2 around	35
right2 as	25
right2 ask	-5	13
right2 at	6
right2 attic		12
right2 backorder	-38	31			18
right2 backsplash	19
right2 backwards	18
right2 bag	-10		13	-8
right2 balance	-8	-13	19
right2 bare	8
right2 bath	9	-32	18
right2 bathroom	27
right2 bay	7
right2 bedroom 2	15
right2 bedroom 4	9
right2 before	10
right2 behind	31
right2 below	-12			17
right2 bend	18
right2 better	-34	38	-13
right2 between				12
right2 big		13		-12
right2 black	28
right2 block	6
right2 blow	20		-9
right2 board	18	-8
right2 bolt	-12	-9	18
right2 book	20	-4
right2 bore			15
right2 borrow	-5		17
right2 both	21
right2 bow	20	-8
right2 bowl	-5	14
right2 box	5	-11		8
right2 bracket	-18	-5		29
right2 break	13
right2 break.		-7
right2 bring			10
right2 brown		15
right2 brush		13
right2 build	8	-8
right2 bury	8
right2 bust	11
right2 button	24			-11
right2 buy				-20	11
right2 call	15
right2 can't		10
right2 cap	15			-10
right2 cat	6
right2 catch	10
right2 caulk	16
right2 cause	40	-7
right2 ceiling	10
right2 center	27	-13
right2 change		-13		11
right2 chase		6
right2 chew	7
right2 chip	-10					21
right2 clamp	22
right2 clean	22
right2 client			13	-14
right2 clip	17
right2 clog	10
right2 close	-13	6	13	-10
right2 closet	33		-20	-8
right2 coat		-15		10
right2 cold	24
right2 column	21		-15
right2 complete	15
right2 cope	19			-5
right2 corner	31
right2 corridor	13			-4
right2 could	15
right2 count	-14	-6	29	-11
right2 counter		18	-13	-20
right2 crank	11
right2 crook	19
right2 crown	-17		21	-15
right2 cure	17
right2 customer	14
right2 cut out			4
right2 d	16
right2 damp	-17	20
right2 date	38	-17		-29
right2 day	16
right2 dead	13
right2 deep	-19	19
right2 deliver	-14	8				18
right2 den		11
right2 didn't		-7				6
right2 different	10
right2 dig	15
right2 dining room	-5	17	-10
right2 dog	5
right2 don't	16
right2 down	20
right2 drain				14
right2 draw				5
right2 drill				6
right2 drip	28
right2 drop	24
right2 dry	20
right2 drywall	22			-16
right2 due	-9	-13		-6	38
right2 dump	-16	-13		22
right2 dumpster	13
right2 each	20	-5
right2 early		6
right2 eat	22
right2 edges	23			-15
right2 either	29
right2 electrician		8
right2 em				6
right2 empty	-18	13	-6	12
right2 end	10
right2 enough	-32	17	19	-9
right2 entry	25
right2 epoxy	15
right2 every	9
right2 everything		18
right2 everywhere	18
right2 except	19
right2 exhaust	13
right2 existing	24
right2 extra	-30	20	19	-32
right2 fasten	-11			16
right2 figure	8
right2 file	7
right2 fill	17
right2 fine	10
right2 first	31	-19
right2 fit	10		-9
right2 fix	19
right2 flash				5
right2 flat	15
right2 float	18
right2 flush	17
right2 forget	22
right2 frame	14
right2 from	10
right2 front	-12			26
right2 full	5
right2 gap				9
right2 gary	-11	-11		20
right2 get	-4
right2 give		-29		-24		22
right2 gonna	5
right2 good			5
right2 gotta		10
right2 gray	28	-7		-5
right2 green	18
right2 grind	23
right2 grout		-8		18
right2 guy	13
right2 hair	8
right2 hairline	9
right2 half		-5		6
right2 hall bath	8
right2 hand		-9	32	-19
right2 hang				7
right2 happy	7
right2 hard	32			-10
right2 has	22
right2 he	38
right2 he'll	23	-14
right2 he's		12
right2 head	18
right2 heat	25			-9
right2 her	10			-18
right2 hide	21
right2 high		6
right2 him	-27	16				21
right2 hinge		-11		-19	9
right2 his	22	-21
right2 hit	20
right2 hole	36			-21
right2 holes	12
right2 hollow	24
right2 home	-20		24	-8
right2 homeowner	5
right2 hook	20
right2 hot	23
right2 house	18
right2 if	33	-20
right2 in			6
right2 inside	24
right2 inspector		27		-8
right2 install	-32			26	13
right2 into		-6	-10	11
right2 isn't	24			-5
right2 its	26
right2 joint		15		-15
right2 just	25
right2 kick	18
right2 knock	7
right2 know	16
right2 l	-9	-10		20
right2 land	12
right2 landlord	11
right2 latch	11	7		-24
right2 laundry	-21			24
right2 leaning			16
right2 legs	10
right2 let		13
right2 let go	8
right2 level	25
right2 little	15
right2 live	14
right2 living room				10
right2 lobby		8
right2 long	21
right2 lose	6
right2 low	14
right2 lower	20
right2 luis	19
right2 m		11
right2 main	21			-5
right2 maple	6			-4
right2 mark	18			-8
right2 match		5
right2 matter	10
right2 maybe	5
right2 me	7
right2 metal		6
right2 mind	8
right2 mine		6		-19
right2 miss	4
right2 miter				4
right2 mix	26	-13	-16	-17
right2 more				12
right2 mount	-21			33
right2 move	25
right2 mud	39	-22
right2 mush	-18		-14	23
right2 must	-4		15
right2 my			22
right2 n	23
right2 nail	30
right2 near	24	-12
right2 never	-15	11
right2 next	-8	22
right2 night	8
right2 no	26
right2 none	7	-25	-21	12
right2 noon	23
right2 notch	20
right2 notice	11
right2 now				20
right2 nowhere	19
right2 number	29			-8
right2 oak		19		-16
right2 off	25
right2 office	-6	18		-11
right2 oh		26	-6
right2 oil	26
right2 okay	18
right2 old				7
right2 once	35			-14
right2 one's	13	-33	-29		6
right2 ones	-45	18	21	-24	9
right2 only	21
right2 open		-12
right2 opened up	22		-12
right2 or		10		-5
right2 order	-15				41
right2 oscar	21	-6
right2 other		-23	23	-35
right2 ours	22	-9
right2 out of level	7
right2 over			25
right2 p	19	-9
right2 painted shut	8
right2 painter		10		-23
right2 pantry	32		-7
right2 paper	6
right2 pass	23	-7
right2 past	15
right2 patch	15
right2 pick		10
right2 piece	-6			18
right2 pin	6
right2 pitch	23	-15		-6
right2 place	10
right2 plane	7
right2 plaster				9
right2 plate		-28	-4	37
right2 please			15	-10
right2 plug	-13	7		13
right2 plumb	-18			30
right2 plus	-29	35	-7
right2 polish		-17	-15	17
right2 pop	20
right2 pour	17
right2 powder	30	-16		-11
right2 powder room	-14	27
right2 prime	-6			7
right2 proud	5
right2 pull	12
right2 pump	32	-14		-6
right2 punky	5
right2 putty				9
right2 quiet	-11	-10		22
right2 quote		12
right2 r	26		-10	-19
right2 rain	18	-19
right2 raise	4	-7
right2 rake	24
right2 rate	10
right2 raw	9
right2 reach	19
right2 read	4
right2 ready	-17	9	10
right2 rear	16
right2 recheck	-15			15
right2 red		4
right2 redo	18
right2 reglue	20			-9
right2 rehang	10	-12
right2 reorder	17
right2 replace	-7	-5		21
right2 require	-19	11	11	-23
right2 reserve	18	-21
right2 reset	30
right2 rest	12		-11
right2 return	25
right2 reverse	8
right2 ridge	14
right2 right	10
right2 ring	26			-6
right2 rise	-8		10
right2 rm	11
right2 rocking	12
right2 rod	22	-14
right2 roll		-11		18
right2 rot	23			-5
right2 round	20
right2 run	41
right2 rust	14
right2 rusted through	6
right2 s			-8	5
right2 sag	10
right2 salon	13
right2 same	-29			19
right2 save	15
right2 saw	21			-5
right2 scrape	18
right2 scratch	27	-5
right2 screen	30	-11
right2 screw	13	-21
right2 seal		-11
right2 seam	4
right2 seat		-5	-9	13
right2 second	-6			16
right2 see	7
right2 she				14
right2 she's	16	-18
right2 shim	8
right2 ship	5	-30	-31		20
right2 shop			13	-9
right2 shot	28	-7
right2 show						16
right2 shut	-11		7	6
right2 side	-8			26
right2 sign	-7	15
right2 silicone		-14	-9	23
right2 sister		6
right2 sit						6
right2 site	-29	-15	44	-36
right2 size	-11	13
right2 slab	18
right2 slip	12
right2 slow	10
right2 small		7
right2 smell	18
right2 snake		12		-5
right2 snug	7
right2 so	10
right2 soft	27
right2 solid				20
right2 some	7	-7
right2 somebody's	4
right2 something	13
right2 sorry	23	-16
right2 sort	10
right2 spare	9	-22	-26
right2 sparky	13
right2 split	-18			14
right2 spray	26			-8
right2 square	12	-9		-24	17
right2 stack	9
right2 stain	10					6
right2 stair	27			-14
right2 stairs		10
right2 stand	19
right2 staple		-7	7
right2 start	10
right2 stay	13
right2 step	-20	23
right2 straight				15
right2 straighten	19
right2 strap				12
right2 strike	24
right2 strip	14
right2 strong	12
right2 super		22		-13
right2 supposed	-7				19
right2 sure	-14	20		-6
right2 swear	12
right2 sweep	10
right2 swing	-15	-16		22
right2 t work.	10	-6
right2 tacky	19
right2 tag	8
right2 talk	20
right2 tank	23
right2 tap	29
right2 tape				6
right2 tear	13
right2 template	-24	-19		20	16
right2 tenant			13	-9
right2 text	12
right2 than		-34	-14	19
right2 that'll					13
right2 the kids	34	-7	-10	-17
right2 the lady	-6	19
right2 the wrong			6	-12
right2 the yard		-24		-11		19
right2 their			6	-7
right2 there		-10		11
right2 there's				17
right2 they're	-15			8
right2 thick	9
right2 thing	-8	-18	-6	11	13
right2 third	35			-28
right2 this	34
right2 those				-17
right2 though	17
right2 through	34
right2 tie	-14	21
right2 tight	20
right2 tile		-13	11
right2 till	16
right2 to	20
right2 toe	14
right2 too		16
right2 too long	-22	24
right2 too short	28
right2 top	42			-13
right2 total	37	-32		-5
right2 touch	20
right2 trace	14
right2 trim	21
right2 truck	10	-13		-11
right2 turn	4
right2 twist	15
right2 under		-7
right2 underneath	16
right2 unit	19
right2 until	4
right2 upstairs	15
right2 use				9
right2 v buy.					21
right2 v return.	26
right2 v use.				9
right2 van	-34		40	-11
right2 vent	11
right2 wait	5
right2 wall				8
right2 wash	12
right2 waste	25
right2 water	23
right2 waterlog	15
right2 wavy	9
right2 way	22			-11
right2 we'll	5
right2 we're	8
right2 we've				12
right2 weep	9
right2 weigh	8
right2 well	-12	17
right2 were			14
right2 wet	21
right2 what	21
right2 what's		-28		16
right2 which	7
right2 while	-17	12		4
right2 white	-22	27
right2 whoever	4
right2 whoever's	29	-18
right2 whole	4
right2 wide	4
right2 will	14
right2 without	20
right2 won't	15
right2 work				5
right2 wrap			10
right2 wrong					5
right2 yet	16
right2 you	9
right2 you'd	-16			24
right2 you're	-7	28
right2 •	22
right2 ✓	12
right3 
	7
right3 !	19
right3 &	-13	10		4
right3 (		-15	14	-17
right3 )	5
right3 +				11
right3 /	15
right3 =	19
right3 ?	23	-7
right3 @	19
right3 about	24
right3 above	7
right3 across	25
right3 add			10
right3 adj				13
right3 adjust	25			-21
right3 again	20
right3 ain't	22			-10
right3 air		4		-4
right3 almost		-18		11
right3 alone	11
right3 along	17
right3 already	-33				17
right3 also	-40	38	-13	17
right3 anchor	-8			16
right3 another	-9		23
right3 anybody				8
right3 anything		11
right3 anyway	10
right3 around	-14		-5	29
right3 as				5
right3 ask	17
right3 attic	-5			15
right3 away	33	-26
right3 b	-17	22
right3 back bedroom	14
right3 backwards	10
right3 bad	17
right3 bag	-17		9
right3 bar				20
right3 bare	21
right3 basement		-8	13	-4
right3 bath	10
right3 bathroom	-14			22
right3 bay			12	-14
right3 bead	-19	-25	-21	33
right3 because	19
right3 bed	17
right3 bedrooms	28	-5
right3 belly	15
right3 below				10
right3 between	17
right3 big	21
right3 bin	-26		32	-22
right3 black	22
right3 block	16
right3 blow	23
right3 board			11
right3 boards		-14	-5	17
right3 bolt	-15	-24		34
right3 bone	-15	5		14
right3 book		11
right3 borrow	17	-10
right3 bowl	15			-9
right3 box	-31		21
right3 bracket	-6			5
right3 brass	-11	18	-5
right3 break	-24		32
right3 bridge	12
right3 bubble				12
right3 burn	30	-12
right3 bust	-14			17
right3 but	6
right3 butter	-4			12
right3 button	-22			28
right3 buy	-5	20		-5
right3 buzz	23			-11
right3 call	12			-7
right3 came off		-11	15
right3 can't			-9	10
right3 carry	-11		-16	-10		25
right3 catch	12
right3 caulk	15
right3 ceiling				14
right3 cellar			8
right3 centres	17
right3 check	41
right3 church	6
right3 circuit	-8	-24	-16	23
right3 clamp	-23	16		16
right3 clear	19
right3 client	9
right3 clip	-9	10
right3 close	26
right3 closet	20
right3 co	-19			12
right3 code	-8			16
right3 coffee				17
right3 color	20	-11
right3 come	12
right3 core				10
right3 could	16
right3 couldn't	19
right3 count	10	-19	-23	6
right3 counter	-6	-14				18
right3 cover	8
right3 crook	29
right3 crown	15
right3 customer	-20	24
right3 cut	32
right3 cut out	22
right3 cutout	20
right3 day	10
right3 dead	40
right3 deck	9
right3 deep	9
right3 den	32
right3 dent	-7	-6	19	-13
right3 didn't	-16	-21		-12	25
right3 different	25
right3 dig	12
right3 dog	5
right3 dont	-19			14
right3 double	-23	13	-13	8
right3 down	28
right3 drain			-10	7
right3 draw	19	-10
right3 drill	-9			19
right3 drip	19
right3 drive	22
right3 driver	8
right3 drop		15
right3 dry				9
right3 duct	17
right3 dump	12
right3 dust	16	-5
right3 each	-13			25
right3 eat				9
right3 edge	10
right3 electrician	26
right3 else		21		-14
right3 empty	18
right3 end				11
right3 enough			30
right3 epoxy		11
right3 ever	14
right3 every	26			-5
right3 everything	-14			14
right3 except	19
right3 extra	-17	20		-21	11
right3 face		7
right3 fall	-7			14
right3 feel	9
right3 figure	-13			20
right3 file	10
right3 fill				14
right3 fine				4
right3 fire	-9			17
right3 fireplace	18
right3 first			17	-10
right3 first coat	25
right3 fit		13		-26
right3 fix	39	-14		-14
right3 flash	12			-11
right3 flat	7
right3 float	10
right3 flood test	12
right3 floor	29
right3 floor's	19
right3 foam			-7
right3 foot	12
right3 forget	-22			5	9
right3 fourth	23			-10
right3 frame		19		-21
right3 freeze	24		-10	-14
right3 front	39
right3 full			5
right3 gable	14
right3 gap	-10			29
right3 gas	-22	14		6
right3 give	-19					17
right3 glue	10
right3 go	31
right3 gonna	23
right3 good	25
right3 gotta	25
right3 grab		5
right3 gray	11
right3 grind	-7	11		-7
right3 grout			13
right3 guest room	27	-19		-6
right3 hairline	8
right3 half	-7		32	-18
right3 hall	26	-6
right3 hall bath	17
right3 hall closet	33			-15
right3 hallway		13		-6
right3 hand		-7	24	-17
right3 hang	34
right3 happy	9
right3 hard				8
right3 haul				12
right3 he'll	23	-7
right3 he's	30
right3 hear	7
right3 heat	11
right3 height	17
right3 here	-8	-7			17
right3 high	19
right3 higher	8
right3 him		4		-12
right3 hinge	12
right3 his		12
right3 hole	15
right3 hole's		6
right3 hollow	14
right3 homeowner	13
right3 hook	-11	8
right3 hot	10
right3 hot side	-6			13
right3 house					15
right3 how				10
right3 hum	25	-22
right3 i'd	4
right3 i'll	8
right3 i've	12
right3 in			17
right3 inside	24			-8
right3 inspector	-15	9		6
right3 inspector's	19
right3 install	32				-16
right3 island	-36	15		23
right3 isn't	14
right3 it'll	12
right3 its	6
right3 jam	-11			16
right3 job	-13			13
right3 joint	-12		12
right3 keep		15
right3 kit		-9		9
right3 kitchen	18
right3 knock	7
right3 know	12
right3 label	10
right3 ladder		-24		15
right3 lady	8
right3 land	40
right3 laser	27	-21		-8
right3 latch	15
right3 laundry	12
right3 lay	22
right3 leak	4
right3 lean	5			-13
right3 leg	13
right3 legs	24		-8	-13
right3 let	9
right3 let go	8
right3 level				5
right3 lid	-28	21
right3 like	14
right3 linen closet	-9	7
right3 lip				11
right3 list	-18	39	-12	-22
right3 little	-7		6
right3 lock	4
right3 loft	-8		19	-19
right3 lol	13
right3 long	-5	17
right3 long wall	14
right3 look	26
right3 loop	13
right3 lot	-5	-22	21	-17
right3 lounge	17
right3 lovely	12
right3 low	19		-11
right3 lower	25
right3 lunch	24			-9
right3 make	26	-9
right3 maple	-6	7
right3 mark	23		-15
right3 match	13
right3 max	6
right3 maybe	6		-4
right3 me	-5
right3 measure	13
right3 mgr	-11
right3 middle	8
right3 mind	17
right3 miss		12
right3 mix	26		-11	-11
right3 more			7
right3 move	-18	15
right3 mud		13	-23
right3 my			21
right3 near	6
right3 neighbor	20
right3 never				5
right3 new	12
right3 next		13
right3 niche	4
right3 night	7
right3 nobody		-17
right3 none	-21	19	14	-12
right3 north	15
right3 north side	15
right3 not	16
right3 notch	6
right3 now				22
right3 number		-9
right3 nursery	16
right3 oak	15
right3 off	39
right3 office	-15		12	5
right3 oh		16
right3 ok	42
right3 okay	7
right3 once	22	-4
right3 one's		-5	-6
right3 ones	-10	8
right3 opened up	-5	18		-12
right3 opening's	-19			12	13
right3 order				-10
right3 other	6
right3 out of plumb	10
right3 outside	22	-10
right3 outta	27	-16
right3 over	21
right3 overhang	14
right3 own	13	-13
right3 owner		20	-18	-9
right3 pack	26
right3 paint	25	-6
right3 painted shut	8
right3 painter	20
right3 pantry			14	-23
right3 paper	27
right3 part	14
right3 party wall	13
right3 past	15
right3 patch	5
right3 pick			-8			14
right3 piece	20			-6
right3 pieces	23
right3 pin				8
right3 pine	-12			16
right3 pipe	11
right3 pitch				6
right3 place	10
right3 plane	11
right3 plaster	5
right3 plate	-16			26
right3 plate's	19
right3 please				-16
right3 plenty	-48	-14	49
right3 plumb	20
right3 plus	-5	28	-14
right3 point	25
right3 pop	5
right3 porch	36			-13
right3 pour	16
right3 powder room	-31		21	9
right3 prime	22			-8
right3 proud	17
right3 pull	8			-9
right3 putty	27			-19
right3 quit	20
right3 rack			16	-17
right3 rake	-15	19
right3 ray	32	-8	-6	-24
right3 read	20
right3 reckon	-14		13
right3 red	-17		22
right3 reglue	28	-16		-5
right3 replace	-31	21		18
right3 reset	13
right3 rest	20		-28
right3 return			12
right3 ring	22	-6		-4
right3 rings	17
right3 rip		5
right3 rise		-10	-7	16
right3 rm	28	-5
right3 rod	23			-14
right3 roll		-17	6	8
right3 roof		7
right3 room	9
right3 rotten	5	-8
right3 row	25	-22
right3 rust	7
right3 s	-14	-7		19
right3 salon				12
right3 same			-4		8
right3 saw	11
right3 scrap	22
right3 scrape				4
right3 scratch	20	-10
right3 screed	14
right3 screw				13
right3 seal	7
right3 seam	28			-12
right3 seams		-7		12
right3 seat	19		-4
right3 second	-8		8	4
right3 second coat	23
right3 she		9
right3 she's	38			-19
right3 sheath	7
right3 shed	-19		5	-5	9
right3 sheet	-10			17
right3 shim				8
right3 shop	-7		19	-13
right3 short	-12	4
right3 should	23	-12
right3 show	6
right3 shy		13
right3 side	19
right3 silicone	-8	7
right3 since	4
right3 size	16
right3 skim	7
right3 slope				10
right3 smell	18
right3 smooth				8
right3 snap	-24	21		6
right3 snug	-6			16
right3 so	9
right3 soft		10		-5
right3 solid				19
right3 sorry	10
right3 sort	10
right3 spare	-39	-14	11	28
right3 sparky	5
right3 spec	10
right3 splice	-20			23
right3 split	28	-7
right3 squeak	-25			20
right3 stack	-16		30
right3 stain	26			-12
right3 stainless	-21		-17	12	12
right3 stair	-18			14
right3 stairs	14
right3 stand	-15			20
right3 staple		-14		16
right3 start	4
right3 stay	-37			29
right3 step	5	-8
right3 steps	25
right3 stick	9
right3 sticker	17
right3 still		-7	-4	36
right3 stop				7
right3 store	-9	-6	21	-4
right3 straight				20
right3 straighten	19	-4		-5
right3 strap	-7			15
right3 street	18
right3 strike	23
right3 strip	-25	-6		36
right3 study	-6		19	-14
right3 stuff				8
right3 style		7		-4
right3 sunroom	6	15	-7	-23
right3 supplier	8
right3 supply	15
right3 supposed	14
right3 sweep		14
right3 sweet	23
right3 swing						15
right3 tag		10
right3 take			12	-27		14
right3 talk	10
right3 tank	26			-7
right3 tap	10
right3 tape	14
right3 tear	19			-14
right3 tell	38
right3 tenant	33	-6
right3 test	14
right3 than	8
right3 thanks	24	-19
right3 the wrong	-40	-19	11	-11	-10	32
right3 the yard	10	-14			15
right3 them	7	-20
right3 then	8
right3 there's	9
right3 they're	-5	8
right3 thick		5
right3 thing	-9			7
right3 third	13
right3 this		-11		12
right3 those		16		-27
right3 though	-12	12
right3 thread		-4			9
right3 through	23
right3 throw	4	-19		-21	18
right3 tie	22
right3 tight	38		-4	-13
right3 til	18
right3 tile	32
right3 time	25			-19
right3 tin			12	-13
right3 too						14
right3 too long	15
right3 touch	27	-5
right3 trim		5		-21
right3 trip	24
right3 truck	-27		7	16
right3 tube		16		-18
right3 turn	29
right3 twice	-12		19	-12
right3 unit	6			-10
right3 up	34
right3 upside down	10
right3 us		6
right3 use			6	-6
right3 utility				15
right3 utility room	-15	20		-4
right3 van	-21		55	-44
right3 vent		7
right3 very	19
right3 wait	12
right3 walk				7
right3 wall	21
right3 wall's	-5	-25	-11	18
right3 walls				25
right3 wash	7
right3 wax	10	-15	-7
right3 way		4
right3 we	25
right3 we're		14		-25
right3 weatherstrip	25
right3 weep	10
right3 were	7
right3 wet	15			-15
right3 when	11
right3 where	35
right3 which		-24	18
right3 while	-21			14
right3 white		11		-19
right3 whole		-5		11
right3 why	19
right3 will					8
right3 without		8
right3 wobble	-5			14
right3 wont	9
right3 would	-12	23		-10
right3 wouldn't	24			-4
right3 wrap		6
right3 wrong		-10
right3 x	-6			10
right3 yet	8	-4
right3 you	14
says imperative before	5
says owed before not		9
says owed behind not	4
sized	-21
sold so true	-49
sort area	-7			10
sort pack	-17
sort volume	-34
then add			-16	7
then add b	20		-16
then add pp	-19			28
then adjust	27			-14
then adjust pp	26			-17
then ain't	16			-5
then ain't is	16			-5
then allow	15
then am	17
then am is	17
then anchor	13
then anchor pp	13
then aren't	12		-4
then aren't is	12		-4
then arrive pp			7
then arrive s	-5	14
then ask b		5
then back	13
then back pp	13
then bag	-18	23		-24
then bag b	-24	27		-27
then balance	19
then bead b		-7
then bend	28
then bend pp	37
then bet	17		-5
then bet b	17		-5
then bind		14
then bind s	8
then block	10
then block pp	10
then blow	8
then blow i	7
then blow s	7
then bolt				4
then bolt pp				4
then book pp				-4
then borrow	19	-10
then borrow pp	19	-10
then bow	25
then bow pp	21	-7
then box	-9		21
then box b	-15		16
then box pp	35	-7	-6	-27
then box s	-12		12
then break b	11
then bring		5
then bring b		6
then bring i	-7	21
then bring pp	17		4	-17
then bubble	6
then bubble b	8
then build	28
then build pp	24	-4
then burn	20
then bury	6
then button	-8			18
then button pp	-8			18
then buy					5
then buy b		9
then buy i	25
then buy pp		-47			51
then buzz	28	-5
then buzz s	14	-7
then call	12
then call b	35			-8
then call pp	-8	12
then cap	16
then cap pp	16
then catch pp	8
then center	10
then center pp	10
then change b	26	-6
then change pp				17
then charge		-7	17	-8
then charge b	-5	-8	18	-10
then chew		8
then chew pp		8
then chip b	21
then chip pp						6
then clamp	18
then clamp pp	18
then clean	11
then clean b	11
then clean pp	9
then clear	17
then clear pp	18
then clip				8
then clip pp				8
then clog	12
then clog pp	12
then close		8
then close b	8
then close s	-18	23
then coat	-18			24
then come s	24
then complete	22
then complete b	20
then consum	-16	-4	-9	23
then consum pp	-16	-4	-9	23
then cope	19
then cope pp	19
then could	27
then could will	27
then couldn't	12
then couldn't will	12
then count		-13	15	-20
then count b	17
then count pp		-16	19	-24
then crack b			6
then crook	11
then crook pp	11
then crown	23			-8
then crown pp	23			-8
then crumbl	15			-18
then crumbl pp	15			-18
then cup	18
then cup pp	21
then cure	12
then cure b	32			-11
then curl	15
then cut out	10
then cut out bpp	10
then cut s	31			-17
then deliver	-7		18	-6
then deliver pp	-12		20	-10
then dent	-7		19	-18
then didn't		-9			5
then didn't will		-9			5
then die		8
then die pp	15
then dig	15
then dig pp	14
then ding	25	-5
then ding pp	25	-5
then do b	-17	48
then do i		-25
then do s	19
then doesn't	9
then doesn't will	9
then dont	-11	11
then dont will	-11	11
then drill	19
then drill pp	20
then drip	18
then drip pp	13
then drip s	21
then drive	10
then drop	25
then drop pp	23
then dry i		-18	-9	8
then dry pp	22	-9		-5
then duct	19
then duct pp	19
then dump	11
then dump s	6
then dust	23
then dust b	23
then ease	4
then ease pp	4
then eat b	-13			20
then eat i	6
then eat p	13			-9
then empty	5
then empty b	5
then exchange	14
then feather	6
then feel	7
then feel s	6
then figure	32	-9
then figure b	29	-11
then file	5
then file pp	9
then fill	19
then fill b	11
then fill pp	17
then find pp	8
then finish pp				18
then fish	13
then fit				15
then fit pp	-10			21
then fix				17
then fix b		5		-14
then fix pp	-7	-13		33
then flash	4
then flash b	24			-17
then flash pp	-6			16
then float		6
then float b	-6	13
then float pp	19			-13
then flush	14
then flush b	19
then forget b				13
then forget p					9
then fre	11
then fre pp	11
then freeze	24
then freeze p	21		-5
then get b		7
then get s	15
then give		-16		-13		35
then give b		-21		-8		15
then give p		-7		-12		33
then give s	7
then glue				28
then glue pp				28
then go p				25
then grab	5
then grab b	5
then grind b	11
then grind pp		4
then grout				12
then grout pp				14
then hand	-6			16
then hand pp	-6			16
then hang b	16
then hang i	44			-9
then hang pp				12
then happen		10		-11
then has	5
then has has	5
then haul pp				5
then head				6
then head b	-4
then head s				9
then help	-8	20		-22
then hold b			-8	7
then hold i	12
then hold s	-8				15
then hook	10
then hook pp	5
then hum	19
then hum i	11
then hum s	7
then install					8
then install pp	-5				12
then isn't	9
then isn't is	9
then it'll		16
then it'll will		16
then jam	25			-9
then jam pp	25			-9
then keep s		12
then key	7
then key pp	7
then kick	-10	18
then kick b	-22	24
then kill		19		-18
then kink	18
then know	7
then know s	19
then label	-20		21	-16
then label b		12
then land	13
then land pp			6
then land s	9
then lap	-9			15
then lay b	29			-5
then lay i	21
then lay pp				12
then leak	22
then leak i	29	-16
then leak pp	30	-6		-6
then lean	-29	9		24
then leave s	-7			24
then let bpp	16
then let s		9
then level pp	23
then lift	24
then lift b	15
then lift i	5
then lift pp	16
then like	17
then like b	17
then look s	8
then lose pp	8
then lower	13
then lower b	13
then make b	19
then mark	16
then mark b	18			-11
then match		8
then match b		5
then match i		13
then measure	6
then measure s	4
then meet	16
then miss b	30			-16
then miss s	8
then miter				4
then miter pp				4
then mitre	31	-24
then mix	31	-6
then mix b	17	-10
then mix pp	18
then mount				21
then mount pp				23
then move	6
then move p				25
then nail	27
then nail pp	30
then need pp	-36	53		-24
then notch	16
then notch pp	16
then notice	-15			21
then notice pp	8
then oil pp	21			-10
then open	11	-14
then open b	45
then open pp	-16	-16	32
then open s	15	-19
then order				-6	40
then order b	-6				30
then order i	25
then order pp		-30		-13	32
then other bpp	10
then ought	14
then ought will	14
then owe				11
then owe b				11
then own	10	-12
then own b	10	-15
then pack		9
then pack b	-21	28
then pack pp	10
then paint	26			-6
then paint pp	27			-8
then pass	6
then pass s	16	-6
then peel		12
then peel b	12
then peel i	-11	17
then pick		6
then pick i	-16	27		-7
then pick pp	-8		-19	-21	-10	21
then pin	12
then pin b	8
then pin pp	9
then pinch	13
then pinch pp	13
then pipe	19			-10
then pipe pp	19			-10
then pitch		-10
then pitch pp		-12		5
then plane	8
then plane b	5
then plug				10
then plug pp				10
then plumb				8
then plumb b	26	-6
then plumb pp	-18			23
then point	5	-9	13	-23
then point b	16
then point i		-18	21	-25
then polish	23
then polish pp	19
then pop	33
then pop b	22
then pop pp	23			-17
then pop s	13
then pour	20
then pour pp	24
then prime b	6
then prime pp	-5	9		-11
then promise	20	-8
then promise pp	20	-8
then pull	12
then pull pp	31
then push	13
then push pp	12
then put	6
then put bpp	9
then put i	16
then quit	20
then quit bpp	22
then quote b	21	-9
then raise pp		-4	-12	13
then rake	-18	15		5
then rake pp	-20	16		7
then rate	16	-4
then rate pp	16	-4
then rattle	14
then read	11
then read bpp				7
then read i	13
then read s	21
then rebuild	16			-8
then recaulk	21
then recaulk pp	21
then reckon			11
then reckon b			13
then recoat	12
then recoat b	13
then recut	13
then recut bpp	13
then redo b	10
then redo p	-7			17
then reglue	8
then reglue pp	8
then rehang		-9
then rehang pp				7
then reorder	13
then repair				8
then repair b				10
then replace				19
then replace b	13
then replace pp				22
then require		11	-11	-7
then require pp		11	-11	-7
then reseat	19			-5
then reseat pp	19			-5
then reset				7
then reset bpp				7
then return	26
then return b	36
then return s	7
then rip b	22	-9
then rip pp			5
then rock	11
then rock pp	11
then roll	-20	-14		34
then roll b	-13	-14	15
then roll s	-15	-17	-16	34
then rot pp		5
then rough	5
then rough pp	5
then run bp	12
then run p		-6
then rust	13
then rust b	11
then rust pp	5
then sag	12
then sag s	7
then sand	4	-20
then sand pp	5	-24	5
then say i	7
then scrape	20
then scrape b	6
then scrape pp	25			-6
then scratch	21	-13
then scratch b	33	-20
then scratch pp	-5					19
then screw				18
then screw pp				18
then scribe b		11
then seal				5
then seal pp	-5			4
then see	18
then see b	18
then seize	14
then seize pp	14
then send				-16
then send b	22			-21
then send i	16
then set s		4
then settle	21	-7		-5
then settle pp	21	-7		-5
then shave	15
then shave b	15
then she'll	16		-14
then she'll will	16		-14
then shear	21			-13
then shear pp	21			-13
then shim	9
then shim pp	9
then ship		-23	-11		19
then ship pp	-10			17
then ship s		-23	-15	-23	23
then short	-22		-11		21
then short pp	-22		-11		21
then should		16		-14
then should will		16		-14
then show b	21
then show i	14
then show pp	-15		16	-15		22
then show s	13
then silicone				8
then silicone pp				8
then sister pp	11
then sit b			10	-10
then sit pp			-7
then sit s	8
then skim	7
then skim pp	7
then slam	9
then slam s	9
then smell	12			-7
then smell b			17	-21
then smell pp	17
then smell s	6
then snap	12
then snap pp	12
then soap		-19		11
then soap b	32	-14		-18
then sort	18
then sort pp	18
then sound	33
then sound b	35			-5
then space	-9			16
then space i	-14			19
then splice	16
then splice pp	16
then split	23
then split bpp	23
then spray	15
then spray pp	17			-5
then square b	-23	11			5
then squeak	13
then squeak s	10
then stack			14	-13
then stack pp			14	-13
then stain	17			-17
then stain pp	17			-17
then stand				6
then stand b	-17			21
then stand i	5
then stand pp	20
then start	16
then start pp	13
then start s	4
then stay b	8		6
then stay s				7
then stick i	4
then stick s	6
then stop b	5	-13		6
then stop pp				11
then stop s	14
then strap	-22			28
then strap pp	-23			29
then stretch	12	-9
then stretch pp	11	-10
then strip				8
then strip b	-23			20
then stuff	-4	7
then stuff b	-10	10
then support	-11				19
then swap				6
then swap pp				26
then swear		-10		8
then swear b	13
then sweat		11
then swell				9
then swell p	9
then swing s				12
then tack	-11	17
then tack pp	-13	18		-7
then tag	9
then tag pp	9
then take b		-4	7			8
then take s			15	-7
then talk				9
then talk b	17
then tap		14
then tap pp		14
then tell pp				14
then test b	26
then text b	7
then that'll	-21		18
then that'll will	-21		18
then they'll	9
then they'll will	9
then they've	-19	19	9
then they've has	-19	19	9
then thin	5
then thin b	5
then think b	-12	11
then think i	9
then think pp	31	-10
then thread	-21	19		-8
then thread b	-23	14		-15	5
then thread s		10
then throw	8	-4		-6	8
then throw b	29
then throw p		-20	-9	-23	22
then throw s	12
then tie	26
then tie pp	18
then tighten	15
then tighten pp	31
then tin	-32		5	14
then tin b	-32		5	14
then torque	4	-14	-15	5
then torque pp	4	-14	-15	5
then trim				12
then trim pp				13
then trip	5
then trip b	17			-6
then trip pp	20
then try	17
then tuck pp				10
then turn b	31
then unopen	-36	-22	42	-19
then unopen pp	-36	-22	42	-19
then use				6
then use b				26
then wait	14
then wait b	13	-6
then wait i	14
then wait s		9
then walk b	31
then walk pp	-14	24
then walk s	-8			6
then want pp		17		-30
then warp						15
then warp pp						15
then wash	8
then wash b	6
then wash pp	4
then wasn't	12
then wasn't is	12
then waterlog	14
then waterlog pp	14
then we'll	10
then we'll will	10
then we've				5
then we've has				5
then weep	9
then weep i	6
then weep s	5
then weigh	17
then weren't	19			-12
then weren't is	19			-12
then wipe	23			-6
then wipe pp	23			-6
then wire				17
then wire pp				17
then wobble b				14
then wobble pp	14
then wont	6
then wont will	6
then work	19
then work bp	12
then would		16
then would will		16
then wouldn't			8
then wouldn't will			8
then wrap b	5
unit bag	-46			37
unit bottle		7	7	-32
unit box	-40
unit bucket				-13
unit bundle	-23	-10	17		22
unit can	-54			32
unit carton	-8	-20	43	-37
unit cartridge	-50		-10	9	17
unit case	-33		37	-8
unit coat	90	-48		-12
unit each	-53	12	14
unit from said	-46
unit from shared	-40	20
unit gal	-35	7
unit jug	-37		37
unit kg	-25		5	21
unit kit	-51		8	20
unit length	-11	-12			14
unit load	18	-10		-17
unit oz	-17		5	10
unit pack	-14	30		-21	13
unit pail	-38	10		23
unit pair	-20	33	-19
unit pallet			8	-8
unit pt		-16		7
unit qt	-56	11	32
unit roll	-50		13	9
unit row	48	-24	-11	-19
unit set	-35	15	-20	24
unit sheet	-19			25
unit sleeve	-7	16
unit sq ft	-4
unit sq m				9
unit square	-21	7		14
unit stick	-59	21				13
unit tin	-38			20
unit ton	-16	-24	-17	28
unit tub	-47	20		8
unit tube	-68	18		7
unit yd	-53	34		15	6
use buy before	-36	22	-17		10
use buy behind		8
use buy imperative behind		27
use buy modal behind	-9	26
use buy owed before	-32	37		-11
use buy owed behind	6
use buy past before	-12	-5	-21	6	15
use buy past behind	-18	-18		-8	60
use buy present behind	-28	5	-5	-18	30
use have owed behind	21
use have past behind			-18	5
use measure copula behind	14
use measure modal before						11
use measure modal behind	-29	45
use measure owed behind	7
use measure past before			8
use measure present behind	8
use move owed before			19
use move owed behind					12
use move past before			15
use move present before	14
use need behind		9
use need modal before	18
use need modal behind		5
use need owed before	4
use need past before	-22	32	-5
use need past behind	22
use need present behind		25
use null modal before	6
use null owed before					7
use null present behind		-24	25	-18
use other imperative behind		39
use other owed before	-17	27
use other owed behind		17
use return before	8
use return behind	-41	-6		7		26
use return imperative behind	15	-14				-4
use return past behind	-42	-27	-24	15	-5	33
use say modal before	26
use say owed behind	14
use say past before	15
use see modal before		15	-7	-5
use see owed before	11
use see owed behind	5
use see past before	10
use use before				21
use use behind				18
use use imperative behind		-4
use use modal behind		18		-20
use use past before				27
use use past behind				25
use use present behind	-13			22
use work imperative before	6
verb add behind				8
verb add imperative	19			-26
verb add modal	-26	34
verb add past	-40	-17		52
verb adjust before	12
verb adjust behind	18
verb adjust past	13
verb arrive behind		11	-6
verb arrive present		11
verb ask imperative	12
verb ask present		6
verb back before	17
verb back behind		17		-9
verb back past		8
verb balance behind	-31		18	15
verb balance imperative	-35	6	22		-9
verb band past	24			-14
verb bang past	25			-7
verb be imperative	17			-5
verb be past	13
verb bed behind	-19			33
verb bed past	-9			27
verb bend before		9
verb bend behind				7
verb bend imperative	22
verb better behind	-19	28		-21
verb better modal	-19	28		-21
verb bind before	8
verb bind present	6
verb bled behind	29	-8	-7
verb bled present	29	-8	-7
verb block behind	18
verb blow before	11
verb blow imperative	19
verb blow present	-9	18
verb bolt behind	-6	-22		19
verb bolt past		-17		15
verb book behind	7
verb bore before				5
verb bore behind	-12	-9		27
verb bore imperative	-14	-4		19
verb bore past	-4			23
verb borrow behind	-5
verb bow before	28	-18	-8	-9
verb box before	-13		-23	17
verb box behind	18
verb box imperative	13
verb box present	-10	-5	-9	27
verb break before	17
verb break past	18
verb bring before			10
verb bring behind	-4	22
verb bring imperative		16
verb bring modal	-7	22
verb bring owed	23	-10
verb bring past	-40	-48	21	-31		48
verb bring present	-14	35
verb bubble before	12
verb bubble past	9
verb build behind		-5		9
verb build past				9
verb burn before	20			-8
verb burn behind				16
verb burn owed	11
verb burn past				12
verb bury behind	9
verb bury past	10
verb bust past	5
verb buy before	-22	13	-14		6
verb buy behind					5
verb buy imperative		40
verb buy owed		18
verb buy past		-20			23
verb buy present	-8	-26	-8	-12	31
verb call modal	11
verb call past		10
verb call present	20
verb can behind				10
verb cap before				9
verb cap behind	-9			16
verb cap past	-10			22
verb carry behind	10
verb carry owed	-10		18
verb catch before	6
verb catch behind	8
verb catch modal	5
verb catch present	10
verb caulk imperative	12
verb caulk owed	12
verb center behind	4
verb change before	-21			34
verb change behind	-13			11
verb change imperative		12		-7
verb change owed	-9	23		-20
verb change past	-21			30
verb change present	-11	-8		30
verb chase behind	14
verb check imperative	14
verb check present	12
verb chew past	14
verb chip before	13			-16		13
verb chip behind	20
verb chip past	20			-12
verb clamp behind				9
verb clamp imperative	21
verb clean before	12
verb clean behind	20
verb clean past	19
verb clean present	16
verb clear behind				9
verb clear present	6
verb clip before	-11	-8		19
verb clip behind	26			-10
verb clip past				6
verb clog past	13
verb close before	31	-11
verb close past		-9		7
verb close present	25
verb come behind					19
verb come copula	14
verb come modal		16
verb come owed	25
verb come past		-18			17
verb consum past	-22	-12	-16	34
verb cope behind	5
verb cope past	7
verb could behind	17
verb could modal	16
verb count behind			12	-6
verb count past	-5	-9	26	-12
verb count present	5
verb cover before	13
verb cover behind	26
verb cover imperative	5
verb cover modal	16
verb cover past	11
verb cover present	31
verb crook before	16			-5
verb crook past	16			-5
verb crush before	9
verb crush past	19			-8
verb cup before	21
verb cup behind			17
verb cup past	23
verb cup present			12
verb cure before	25
verb cut before		7
verb cut modal		18
verb cut present	17
verb deliver before	-9		20	-8
verb deliver past	-14		21	-10
verb demo behind		10
verb dent before	29	-5		-12
verb dent past	19
verb dial behind	12
verb dial past	13
verb didn't modal	-6	19	-20
verb die before		12		-6
verb die behind	7
verb die past	25
verb dig behind	-8	24		-8
verb dig past		14		-10
verb ding behind	20
verb ding past	23
verb do before			5
verb do imperative			6
verb do owed	8
verb do past	-13	-6		39
verb do present	25
verb doesn't behind	15
verb doesn't modal	11
verb don't before	30			-6
verb don't behind		13	-4
verb dont before	12
verb dont modal	12
verb drain modal	5
verb drain past	23			-9
verb draw past				9
verb drill before	22
verb drill behind	7
verb drill imperative	6
verb drill modal	14
verb drill owed	30	-6
verb drill past	8
verb drip behind	15
verb drip past	14
verb drip present	6
verb drive behind	-14
verb drive past				11
verb dry before	-13		13
verb dry behind	8
verb dry modal	16
verb dry present	5
verb dump before		5
verb dump behind		12		-15
verb dump present		13
verb ease behind	22
verb ease past	20
verb eat before	15			-10
verb eat behind				12
verb eat past	14
verb eat present	-9			16
verb edg behind	16
verb edg past	16
verb email behind	6
verb end behind				4
verb end past				5
verb fail behind	8
verb falta behind		15	-9	-16
verb falta owed		15	-9	-16
verb feather behind	24
verb feel behind	22
verb feel modal	23
verb figure behind		13
verb figure imperative	-18	32
verb figure present	13		-8	-12
verb file behind	9
verb fill before	22
verb fill imperative	9
verb fill present				6
verb find before	17
verb find imperative	-5	17
verb find modal	14
verb find past			5
verb finish before		-8	-9	10
verb finish imperative			-11	12
verb finish modal	5	-14		5
verb finish present				16
verb fit before		-5	-9	19
verb fit behind	-6			9
verb fit past	-28			37
verb fit present	25
verb fix before				15
verb fix behind	5
verb fix imperative	18
verb fix past				21
verb fix present	10
verb flash behind	23			-8
verb flash past	25			-9
verb flip behind			10
verb float behind		-10		8
verb float present		-5		12
verb flush behind	9			-10
verb flush imperative	20	-6
verb flush past	26			-9
verb flush present		11
verb foam before	16
verb foam behind	-4	-5		17
verb foam past		-5		16
verb forget behind		6
verb forget past	-5	18		-8
verb forget present	10
verb frame before	12
verb frame behind	12
verb frame past	12
verb fray before	6
verb fray past	6
verb fre behind	-5	-9	20	-14
verb fre past		-7	18	-12
verb get copula		16	-12	-11
verb get imperative		70
verb get modal	20	-5
verb get owed		16
verb give before	25
verb give behind						11
verb give present	-14		-4			17
verb glue before				5
verb glue behind				23
verb glue imperative	6
verb glue owed	19
verb glue past	-5			32
verb glue present				9
verb go imperative		17
verb go owed					7
verb go past				28
verb gonna before		6
verb gonna behind	-24		27	-14
verb gonna modal		13	-6
verb gonna owed	-18		26	-6
verb gotta behind	10
verb gotta owed	13
verb grab behind		7
verb grab modal	-23	37
verb grab past	-24	-27	-11	-12	34
verb grind behind	9
verb grind past	18
verb grout before	12
verb grout behind	26
verb grout imperative	13
verb grout modal	13
verb grout past	18
verb grout present	5
verb guess behind		15
verb guess present	-19	25
verb hand behind	12
verb hand past				15
verb hang before				25
verb hang behind				13
verb hang imperative	-4		13	-19
verb hang modal	28
verb hang owed	21
verb hang past	-11			55
verb hang present	17
verb has behind	18
verb has owed	10
verb haul past	-13	20
verb have owed			7
verb have past			-18	5
verb head behind		8
verb head present			-5	8
verb hit before	6
verb hit imperative	25
verb hit past				6
verb hold behind	9
verb hold past	22
verb hook behind		-6		17
verb hook modal	10
verb hook past	-8	-6		19
verb i'd behind	14
verb i'd modal	14
verb i'll behind		5		-5
verb i'll modal		5		-5
verb install before		-8		10
verb install behind	-22			26
verb install past	-24	-6		31
verb it'll behind	-10		12	-9
verb it'll modal	-10		12	-9
verb jam past	15
verb keep behind			5
verb keep imperative	4
verb keep past	-12		23	-6
verb keep present	12
verb key past	24
verb kick before	11
verb kick present	11
verb kill behind	11
verb kill owed	11
verb kink past	22
verb knock behind	8
verb knock present	17
verb know behind				5
verb know modal	-12			17
verb land behind	22
verb land owed	12
verb land past	13			-4
verb land present	-7				17
verb latch before		8
verb latch modal	7
verb lay before	-12			16
verb lay behind				11
verb lay imperative		4	8	-17
verb lay past	-16			38
verb lay present			10	-14
verb leak past	5
verb lean behind	13
verb lean past	15
verb leave before			36
verb leave imperative	11
verb leave modal	19
verb leave past			18
verb level imperative	16
verb level past	-4			13
verb lift behind	15
verb lift owed	6
verb like behind	-10	32
verb like modal	-15	29
verb like present	12
verb line before	17
verb listen imperative	4
verb live behind	5
verb live modal	6
verb look present	10
verb lose before	7
verb lose behind	5
verb lose past	8
verb love behind	-7			15
verb lower behind	15
verb lower imperative	15
verb make before	21
verb make imperative		4
verb make past	10
verb mark behind	12
verb mark past	11
verb match modal	15
verb measure before	15
verb measure behind	7
verb measure past	11
verb measure present	5
verb meet behind	10
verb mention past	16
verb miss before	15
verb miss behind		20
verb miss imperative	20
verb miss past	24	-21
verb miss present		23
verb miter behind	6
verb miter past	6
verb mix behind	7
verb mix past	7
verb mount before	-7	-8		20
verb mount past	-37	-10	-20	42
verb move before	18
verb move imperative	6
verb move modal		6
verb move owed	9
verb move past	30
verb move present			10
verb mud before	16
verb must behind	16
verb must owed	15
verb nail before	8
verb nail behind				11
verb nail past				8
verb need before		17
verb need behind		12
verb need owed		10
verb need past	-22	35	-16	-13		8
verb nick behind	8
verb nick past	11
verb notch before	19			-4
verb notch behind	12
verb notch past	23
verb null present		-24	25	-18
verb oil behind	17
verb open before	9		7	-20
verb open imperative	15
verb open past			13
verb open present	20
verb order before	-19	22	-10	-19	10
verb order behind		8			5
verb order imperative		5
verb order modal		7
verb order owed	-11	21
verb order past	-9		-8	-20	51
verb order present	-27	30		-13
verb owe behind		10
verb own behind	5
verb pack behind				4
verb pack imperative	-13	20		-9
verb pack past				18
verb paint imperative	15
verb paint modal			13
verb paint owed	21
verb paint present	13
verb pass before	18
verb pass behind				18
verb pass past	4
verb pass present	-13			23
verb patch before	-20			24
verb patch imperative		7
verb patch owed	12
verb patch past	17
verb peel behind	19
verb peel past	19
verb pick behind	-6				25
verb pick imperative		24
verb pick past	-11	-17		-7	58
verb pick present		14
verb pin behind	-17	-4	11	15
verb pin past	-17	-4	11	15
verb pinch behind	14
verb pinch past	16
verb pipe past	21			-11
verb pitch past	16
verb place behind	-23			29
verb place imperative	-24			30
verb plane behind	16
verb plane imperative	10
verb plane owed	14
verb plow past	26			-22
verb plug before	25
verb plug behind	-17		9	15
verb plug imperative	-11		22
verb plug owed	16
verb plug past				17
verb point behind			5
verb pop before	24			-4
verb pop past	21			-9
verb pop present	4
verb pour behind	9
verb pour owed	10
verb pour past	10
verb prime before	-15	20		-9
verb prime behind	8
verb prime imperative	24
verb prime past	-5	9
verb prime present	19
verb promise past	-10	18		-13
verb prop behind				6
verb pull before	6
verb pull behind	14
verb pull imperative	9
verb pull modal	4
verb pull owed	8
verb pull past	7
verb pull present	4
verb pump imperative	6
verb push behind	17
verb push modal	10
verb put before	18
verb put modal	-12	20
verb put owed	-18		17	-25
verb put past				12
verb put present	-8	27		-10
verb rack past				8
verb raise behind		8		-5
verb raise imperative	10
verb raise past		13		-12
verb rake before				7
verb rake behind		-21		11
verb rake past		-21		17
verb rate behind	18
verb rattle before	5
verb reach behind	8
verb reach modal	9
verb read past	5
verb rebuild behind	-21	-7		29
verb rebuild present	-6			13
verb receive past	-44	-17	29	-26	31
verb recess past				4
verb reckon behind		18	-8	-16
verb redo behind	-11	12
verb redo imperative	33	-6
verb redo past	-17		5	7
verb rehang before	14
verb rehang behind				7
verb rehang past				7
verb rekey behind	31			-9
verb rekey past	33			-19
verb relay behind	-6	-8		15
verb relay past	-6	-8		15
verb remind behind		-7	10
verb remind imperative		-7	10
verb rent behind	27	-17
verb rent past	10
verb reorder behind	-16	11			11
verb replace before				22
verb replace behind				12
verb replace past				25
verb reset behind				15
verb reset imperative		-7		13
verb reset past				5
verb return behind	-25	-22	9	-10		28
verb return imperative	15	-14				-4
verb return past	-27	-14	-18	-16		34
verb return present	-18		28
verb ring behind	6
verb rip modal			11
verb rip owed			13
verb rip past	10
verb rip present	7
verb rock past	13
verb rod behind	-9	20		-14
verb rod past	30			-16
verb roll before	36			-25
verb roll modal		-14	-13	14
verb roll past	31
verb roll present	16
verb rough past	5
verb run before	27
verb run imperative		7
verb run modal		8
verb run present	5
verb sand before	6
verb sand behind	23
verb sand modal	9
verb sand owed	16
verb sand past				-11
verb sand present	24
verb save behind			21	-10
verb save past	-8		26	-10
verb saw owed	13
verb say imperative	18
verb say modal	41
verb say past	18
verb scrape before	11
verb scrape behind	22
verb scrape imperative	21
verb scrape past	23
verb scratch before	-5					19
verb scratch behind	17
verb scratch past						13
verb screen owed	5
verb screw before				7
verb screw behind				8
verb screw modal	8
verb screw owed	14
verb screw past				18
verb scribe before	20
verb scribe modal	25
verb scribe owed	17
verb scuff behind	16
verb seal before			12	-15
verb seal behind				11
verb seal present	7
verb seat before	13
verb seat modal	13
verb see before		10
verb see owed	10
verb seize before	15
verb seize past	15
verb send before	-11	11
verb send behind	-7					19
verb send imperative	-6	14
verb send modal	-8	17
verb send owed	-6	16
verb send past	-10					30
verb send present				7
verb set before		-17	19	-21
verb set imperative	11
verb set modal	25
verb set past				8
verb set present	-17		22	-30
verb shift owed	6
verb shim before	20
verb shim behind	29
verb shim modal	6
verb shim owed	17
verb shim past	33
verb ship before	14
verb ship behind	-7		4		11
verb ship present	-14				20
verb short past		6		-5
verb should behind		-5		9
verb should modal		-5		9
verb show before	-7		15
verb show behind	7
verb show past	-21		20			9
verb show present	25
verb sign owed	13
verb silicone before	24	-8
verb silicone owed	6
verb sister behind				9
verb sister imperative		14		-13
verb sister modal		20		-27
verb sister past	-8			29
verb sit before						5
verb sit imperative	26	-8
verb sit modal	-14	9				14
verb sit owed				4
verb sit past	15
verb sit present	15
verb size behind	23	-9
verb skip behind	15
verb skip imperative	14
verb slam present	5
verb slide behind	11
verb slide modal	11
verb slip behind		15		-11
verb slip past	24			-4
verb slump past	13
verb smell behind	5
verb snake behind	13
verb snake past	16
verb snap before		7
verb snap behind			11	-7
verb snap past				-5
verb snug behind	21			-6
verb snug past	24			-7
verb soak past	14
verb sold behind	14
verb sold present	14
verb solder behind		-5			11
verb solder past	-7	-7			16
verb sort past	11
verb spend behind	-18	-12	-14	29
verb spin behind	13
verb spin present	13
verb splice before				10
verb splice behind	5
verb splice modal	13
verb splice owed	4
verb splice past				7
verb split past	-21			28
verb spot behind				9
verb spot past	9
verb spray before	20			-11
verb spray past	22			-8
verb square behind	8	-6
verb squeak before	6
verb squeak present	4
verb stack behind	-7			12
verb stack past	-14			16
verb stagger behind	-10			16
verb stagger past	-5			12
verb stain before		5
verb stain behind		10		-8
verb stand behind	7
verb stand past	10
verb stand present	10
verb staple behind		11	-7	-14
verb staple past	-6	17	-4	-12
verb start before	23
verb start past	7
verb start present	11
verb stay before	8
verb stay behind		-18	14
verb stay imperative	-6	-21	21	-8
verb stay modal	13
verb stay owed	7
verb stick imperative	42			-9
verb stick past				19
verb stop before	-14		16
verb stop behind	26
verb stop past	23
verb stop present	-15		16
verb straighten behind	16
verb strap behind	-11			10
verb strap imperative	-5		11	-9
verb strike before	16
verb strike modal	16
verb strip before	10
verb strip behind	11
verb strip past	12
verb stuff behind	-17			9
verb stuff imperative		8		-4
verb stuff past	-8	-9		24
verb supposed before	-12	-4			23
verb supposed behind	18
verb supposed owed					19
verb swap before	-6			26
verb swap behind				9
verb swap imperative		17		-33
verb swap modal	19		-18	-24
verb swap past	-10			45
verb swear behind	29	-19
verb sweat behind	-34	-19	11		11
verb sweat imperative	-31	-17	16	15
verb swing before	10
verb tack behind	17
verb take before						8
verb take behind						11
verb take imperative		-33	30
verb take modal		24		-19
verb take owed			12
verb take past						34
verb talk behind	6
verb tap before	7
verb tap present	5
verb tape imperative	7
verb tape modal	6
verb tape present	11
verb tear before	10
verb tear behind	8
verb tear past	14
verb tell before	21
verb tell modal				11
verb tell owed	4
verb tell past	22
verb tell present	16
verb test before	13
verb test behind	17
verb test past	26
verb text behind	13
verb text imperative	15
verb think before	9
verb think past		-16			15
verb throw imperative	-21	27
verb throw past				14
verb throw present	29
verb tie before	6
verb tie behind	25
verb tie past	22
verb tile behind				9
verb tile past				9
verb top behind	31
verb top imperative	5
verb top present	21
verb torque behind	11
verb torque past	31	-4		-24
verb touch behind	11
verb touch imperative	7
verb touch modal	10
verb touch past	12
verb trim before				14
verb trim behind				8
verb trim imperative	4
verb trim past	-16			29
verb trip before	17
verb trip past	17
verb try imperative	-10		17	-10
verb try past	13	-5	-25	5
verb turn before	30
verb turn behind	12
verb turn imperative	18
verb turn modal	8
verb turn past	23
verb undercut behind	12
verb undercut owed	9
verb use before				21
verb use behind				18
verb use imperative		-4
verb use modal		15		-19
verb use past				33
verb use present		-8		17
verb vacuum before	23			-11
verb vacuum behind	9
verb vent behind	18
verb vent imperative	17
verb wait before	22
verb wait imperative	28	-21
verb wait modal			11
verb wait present	28
verb walk before	23	-8
verb walk behind					10
verb walk past		-5			14
verb walk present	9
verb want modal		15
verb want owed	4
verb want present		17
verb wash before	7
verb wash behind	25
verb wash imperative	18	-5		-8
verb wash owed	14
verb wash past	17			-4
verb wax behind	10
verb wax imperative	5
verb weatherstrip owed	-7	16
verb weep before	18
verb weep present	11
verb weigh behind	-14			16
verb weigh present	19
verb weld before	13
verb will before	8
verb will behind	23
verb will modal	25
verb wipe behind				7
verb wipe past				10
verb wire before	11
verb wobble before	15
verb wobble past	12
verb work behind			17	-6
verb work past	19
verb work present	8
verb would before	-17	19
verb would modal	-8	15
verb wouldn't before	15
verb wouldn't behind		13
verb wouldn't modal		8
verb wrap behind	12
verb wrap imperative	33			-5
verb wrap modal	-8	18	-15	-8
verb wrote behind	13
verb wrote present	13
volume after have far	-39	10	21	-24
volume after have sentence	-14	23	-6
volume after need far		-19	20	-14
volume after need here	28	-10	-6
volume after need sentence	-47	52		-10
volume after none far	-56		14
volume after none here	-38	18	-12	26
volume after none sentence	-39			27
volume after used far	-14	4
volume after used here	11	-21	5	-12
volume before it ate			-10	27
volume before it bought	-32	12		-21	13
volume before it came	-34	-28	43	-33
volume before it have	-18		57	-35
volume before it lacks	-32	12
volume before it need		27	-6
volume before it used		-12		14
volume behind it have			13
volume behind it lacks	24	-32		-38	19
volume behind it need			10	-13
volume behind it used	-10	-13	9	8
volume beside bring	-11	10
volume beside buy		19	-13
volume beside buy b nobody	5
volume beside buy b other	-24	45	-19
volume beside figure		11	-19	-18
volume beside get	-5	8	8	-4
volume beside go	-19			34
volume beside have		-11	12	-9
volume beside have b person	7	-7
volume beside is	6			-30
volume beside leave	-43	6	32	-30
volume beside like	-24	-9	13	9
volume beside measure s other		16	-20	-20
volume beside move p other	-10			22
volume beside move pp other	-32	22		-21
volume beside need		17
volume beside need b nobody	17	-6
volume beside need b other	-21	27
volume beside need b person		22
volume beside nothing	-36	7	29	-5
volume beside other b other	-36	34		-31	6
volume beside other b person	-38	-24	-6	37
volume beside other p other		-28	-39	24
volume beside other p person	-24	-21	41	-20
volume beside pick	-24		-8	-9	20
volume beside pour	-8			20
volume beside say b other	-22	27		-8
volume beside take	-4	-24		23
volume beside undefined is other	6			-30
volume beside use	-9			50
volume beside use pp nobody				35
volume beside use pp other	-8			21
volume beside use pp person				24
volume beside work b nobody	-39		10	11
volume beside work b other	-6	22		-28
volume beside work pp nobody		-24	13	-11
volume beside work pp other	-8	-36	-43	44
volume beside work pp person	18	-11	-8	-6
volume buy imperative behind		24
volume cue ate		-13	-31	36
volume cue back	-25		33	-20	-13
volume cue bought	-28		12	-33	13
volume cue came	-14	-20	15
volume cue have	-39	-14	67
volume cue lacks	8
volume cue need		32
volume cue used	-18			22
volume flawed	5		-10
volume have present behind	-30		31	-7
volume kept	-22	10	18	-22
volume left ,		-29	13
volume left .	-52
volume left :	-15		26	-15
volume left about	-6	-28	20
volume left and		12	-12	-17	15
volume left buy	-13	30
volume left figure	5	5	-17	-13
volume left get	-20	10	16	-10
volume left have	-25	-4	35	-7
volume left like	-24	-9	13	9
volume left maybe		-4	17
volume left me	-28	19	13	-20
volume left need		25
volume left pour	-37			40
volume left take		-12		9
volume left the	16	-19		-14
volume left through	-12			30
volume left up	8	-12	-17	-23	18
volume left use				23
volume left with	-41		10	12
volume list need	13	5	-34	-19
volume more	-24	13	9	-15
volume move past before	-18	-6	19	6
volume move past behind	-31	-12	21	11
volume name flawed			11
volume named before material	-22		18	9
volume named before part	40	-15	-22	-26
volume named before surface			-15
volume named here finish	-46	13
volume named here material	-45	17
volume named here word	-27	22	32	-22
volume need modal behind	-29	37		-12
volume not ahead	-9	18	-22	4
volume null copula behind	-39	12	21
volume null none no	-6		6
volume other copula behind	-13	-22	4	18
volume other imperative behind	-16	32
volume other past behind		-33	25
volume other present behind	-18			19
volume pointing	7	34	-33	-19
volume right 
	-37	21
volume right #	-16	22
volume right .	-46	7		13
volume right Q	-36	17	19	-22
volume right and	-27	29
volume right for	-17	27
volume right go	-38	-30		40
volume right i	-12	13	-38	14
volume right in	-6			10
volume right is	10	9	-30
volume right of	-42	21			6
volume right on	-37		34	-21
volume right so	-26	-19	37	-25
volume right the	-17	33	-28
volume say imperative behind	-31	24
volume says copula behind	-37		21
volume says imperative behind	-28	47	-13
volume says modal behind	-47	27	-38		15
volume says none no	-6		6
volume says owed behind		29
volume says owed behind not	22	-12		-14
volume says past before	-58		9	16
volume says past behind		-10		14
volume says past behind not	-17	-15	16	5
volume says present behind		-6	22
volume sized	-8	14	7	-38
volume sold so false	-11
volume sold so true	-21		14
volume then have b	-25	13	12	-7
volume then move p	-15	-20	-31	35
volume then other b	-16		21
volume then other p	15	-25	-33
volume then undefined is		25	-15	-13
volume then undefined will	-10		6
volume then use pp	-20	-24	-33	37
volume then work b	-53	-13	27	23
volume then work pp	-44	6	6		12
volume use past behind				34
volume verb be behind	-13	-22	4	18
volume verb bring behind			11
volume verb buy behind	-15	29
volume verb figure behind		11	-19	-18
volume verb get behind	-12		8
volume verb go behind	-14			26
volume verb have behind	-30		31	-7
volume verb leave before	-7		40	-11
volume verb leave behind	-25		21	-14
volume verb need behind		7
volume verb null behind	-41	10	27	-8
volume verb null no	-6		6
volume verb pick behind	-24		-8	-9	20
volume verb take behind	4	-15
volume verb use behind				37
volume whole clause	-11		8
volume work past before	-39	-38	26	11	-4
volume work past behind			-28	12
weight after have far	-25	31	-8	-11
weight after need sentence	18			-15
weight after none sentence		7
weight after used sentence	-10	-18		27
weight before it have	-46		41	-48
weight before it need	4			-8
weight before it used				19
weight behind it have	-23		8	15
weight beside get	-36	25	14	-23
weight beside hold	26
weight beside is		16		-16
weight beside measure i other	19
weight beside measure pp other		-5		12
weight beside nothing		12	-22
weight beside other b other	-19	17	-7	5
weight beside weigh	-6		-8	11
weight beside work b other	-20	-26	19	9
weight beside work pp nobody	-25	-7		31
weight beside work pp other	23	-18
weight cue have	-12		28	-14
weight cue need	-43	44	-6	-13
weight cue used	-17			30
weight flawed		8
weight left ,	-15	-37	11	20
weight left G	14	6	-19	-32
weight left and	-24	42	-10	-37
weight left at	20
weight left hold	25
weight left in	-24		-10	25
weight left with				4
weight measure past behind	-13	-21		23
weight measure present behind	32			-15
weight name flawed	-15			9
weight named before material	-7		4
weight named before part	8	-18
weight named before word	6	12		-34
weight named here material	-61	28	-13	35
weight named here word		-6	13
weight null copula behind	27			-6
weight null none no	-8	12
weight other copula behind	10
weight other past behind	-6	-31	13	7
weight right #	-48	13	17
weight right ,	6	6	-10	-27
weight right .	-22		9
weight right and	-15			31
weight right for	15
weight right on	13	12	-10	-30
weight says copula behind	26
weight says imperative behind	-9	32		-24
weight says none no	-8	12
weight says past before		-22		14
weight says past behind	-9	-5		20
weight says present behind	-8	-23	15
weight sized	-38	34	-14	10
weight sold so false	-14			10
weight then other p	-19		-11	19
weight then undefined is	14
weight then work pp		-8		14
weight verb be behind	10
weight verb get behind	-12	5	15	-17
weight verb null behind	27			-6
weight verb null no	-8	12
weight verb weigh behind	-18		-6	19
weight whole clause	-25	7	13	-10
weight work past before		-10	-8	11
weight work past behind			-8
who nobody owed		19
who nobody present	-11		57
who thing imperative	10
whole false		-29	34
whole true	-8
`;
