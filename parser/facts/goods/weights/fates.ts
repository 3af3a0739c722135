/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after #	33
after &		9	-13
after '	10
after (	-12		9	-30		12
after )	-19	17				7
after +	-13	11
after /	-21		8	9
after 1	-15		21
after =	22
after @	-6			11
after about	32
after above	24
after acclimate	-6		17
after account			6
after across	14
after actually	17	-6
after add		-16		17
after adjust	22
after aff	-13			18
after again	24
after against	23
after ain't				12
after air	36	-12		-27
after allen	20
after already	-7
after altogether	27
after am	-20			25
after american	-21	30
after an	17
after anchor	20
after any	9	-6
after anybody's		16	-8	-13
after anyhow	12
after apart	19
after around				7
after arrive	7
after arvo	-6			13
after as				11
after attic	6		-6
after b	22
after baby				7
after backsplash	-8			17
after backwards	26
after bad				4
after bag	-15		5
after balance	-4	-20	18	-6
after balcony	-17	-7	23	-8
after bang	-7	-8		19
after bare	12
after basement			8
after bathroom				18
after beat	14		-20	-27
after bed	27
after bedrooms	26
after belly	27
after bench	-10	-17	9	10
after beside	35			-22
after better	-18	22	-10
after between	18
after bled	15
after bleed	14
after bleeding through		14	-10
after blow	26
after blue	-27	16	21	-15
after board	26	-17	-11
after boil	20
after bolt				21
after bone	-17	12		10
after bore	-9		10
after bought far copula	20
after bought far modal	27	-6
after bought far none	12	-6	9	-10
after bought far past	-13					22
after bought here		-18	-11	-18	32
after bought here and		-7			16
after bought here none	-16	-30	-23	-26	36
after bought here past	20
after bought here present	-10	-10			20
after bought here run-on	21
after bought here start	-14	-5	-6	-13	24
after bought sentence	-4				50
after bought sentence and	-21	-32			33
after bought sentence comma	-15	-36		-38	54
after bought sentence copula					7
after bought sentence imperative	-5	15
after bought sentence none	-18	-44		-44	54
after bought sentence past	-20	16		13
after bought sentence present					9
after bought sentence run-on	5
after bought sentence word	-8	22		-13
after bow	29	-11
after bowl	19	-8		-7
after box	-22		10	17
after boy	18
after bracket		-6
after brass	6
after bridge	17
after bring	-13	24
after broke off	19
after brown		18
after brush	-28		22	-11
after bug	15
after build				6
after bury	31	-7		-15
after bust	36
after butt				8
after butt joint	13
after butter	-11			16
after button				16
after buy	-34	31
after buzz	33
after came off	-14		23	-9
after can't		6
after carbon	11
after carton	-15	7	17
after case	-19		22
after cat	18
after catch	18
after caulk	10
after ceiling	9
after cellar	-4		19
after center	15
after centers	23		-9	-16
after centre	10
after centres	12
after chair		-12		6
after change	-10	-6		27
after channel	20
after chatter	21		-9	-6
after check	21
after chew			8
after chewed up	13
after chip						21
after chirps	12
after church	9
after clamp	-18	29
after click			16
after clinic	19
after clip				11
after clog	13
after closet	18
after coffee				10
after color	4
after column	23		-11
after coming off	23	-4		-6
after common		9
after compact	12
after cope	-15	18
after copier	19
after core				7
after cornflakes				4
after correct	6
after corridor	11	-11
after corrosion	26	-10		-12
after could	8
after counter		-34				14
after course	25
after cover		15
after credit	9
after crook	32			-4
after cross threaded	24
after crosse	11
after crosses		7
after crown	18
after crumbl		-10
after crumbling	-19	22
after crush	15
after ctr	27	-12		-15
after cup	28
after cure	21
after curl	21
after cut out	10
after damp	6
after day	14
after daylight	29	-21
after days	31	-12
after dead	9
after deal	5
after deck	17
after deep	25
after deliver	-15			-10
after delivery	-15	18
after den	9			-7
after dent	10			-10		8
after didn't		-13		11	9
after die		13
after different	19
after dig		15
after dime	-5		10
after dining room	14
after doesn't	6			-6
after dont		11
after doorway	28
after drags	16
after drain		7
after dresser	18
after drill	5
after driveway	11
after drum	10
after dry	6
after drywall	41			-20
after duct	25	-9		-7
after dust	22
after each		-10		15
after early		22
after eat	11
after edge		11		-9
after either	13
after electrician	15
after else		21		-16
after empty	-4	17
after end	7
after ends	17			-18
after engineer	5
after enough	13
after enter	13
after entry	27
after epoxy	9
after even	7
after ever	26	-9		-5
after every	27
after everybody	15
after everything	19	-7
after everywhere	29
after exam					13
after except	5
after extra	-26		17	4
after eye	27			-18
after face	38
after factory	-15	22
after falling	13
after falls	16
after family room	-11	9		6
after far	-14			25
after far end	7
after fasten	16
after feed	8
after feel	12
after feet		11
after fell	-25	20		9
after fell off	-11	18
after fence		-5	16
after figure	23	-10
after file	7
after finally	29
after fine	10
after finger	20
after finish	5
after fire	10
after fireplace				5
after first			8
after first coat	-19	-4	-16	32
after fit				14
after fix				16
after flash		11		-8
after flat	23
after flicker	11
after flip	28
after float	15			-13
after flood test	14
after floor	13
after floor's	-7		15	-8
after floors	15
after flush	23
after foil				9
after foot	23	-4
after fourth	25
after frame		20
after fray	20
after freeze	18
after front				6
after fronts	26			-18
after frost	-11	-14	-16		18
after gable	9
after garage			31	-10
after gas	-17			16
after gears	-5	16
after give	-7			19
after glue				18
after gonna		10
after good			17	-7
after gotta	9
after gray			-4	19
after green				7
after grinder	16
after grout	29	-17
after guest room	18
after gurgles				-5	19
after gut	5
after hair	20
after half	-6		10
after hall closet	24
after hallway	16
after hammer	14
after hand			27
after hank	12
after happen		17		-9
after hard	38
after hasn't		15	-14
after have far and	7
after have far comma		6	7	-30
after have far imperative		4
after have far none			5
after have far owed		6
after have far past						10
after have far run-on	11
after have far word	21	-6
after have here	7
after have here and	17
after have here comma	42	-6
after have here copula	5
after have here modal	20	-4
after have here none	-7	-9	35
after have here owed	15
after have here past	44		-5
after have here run-on	10
after have here start	-22		22	-22
after have here stop	6
after have here word			8
after have sentence comma			25	-9
after have sentence imperative		26
after have sentence modal	-20	36
after have sentence none	-6	7	25	-25
after have sentence owed	9
after have sentence past	7
after have sentence run-on	10
after have sentence word		51		-9
after haven't	-26	20
after he's	15
after head				16
after hearth	9
after heat	7			-13
after here	-6		26
after hers	-6			16
after high			11
after higher	9
after him						17
after his		8
after hit	17
after hole	6
after holes	14
after hollow	33
after home	-26	11	25	-18
after homeowner	6
after hook		4
after hot		-7		17
after hot side	6
after house	8
after hub		-13	-4	15
after humidity		11
after i'd	25			-8
after i've			15
after inch	-10			16
after inside			12
after inspector	-22	21
after install	-7			22
after instead				-15		12
after into				15
after isn't			9	-10
after its	23
after jam	5
after job	-20		12
after joint	-12		21
after joist bay	10
after just	7
after kennels				-5	19
after kick	11
after kicks out				7
after kid			15
after kill	12
after kind	-14	25
after kink	-12			21
after kit		9
after knock	6
after know	28
after l	7
after lab	-16	25	-24	-7
after label	-6		18	-5
after lacquer		17		-25
after ladder	30	-28
after lag	13
after lane	30			-12
after latch	4
after later		-4	13	-4
after latex	21		-7	-7
after laundry	18			-15
after law	12
after layers	8
after lean	-14	13		4
after leaning	-8	-6	17	-4		8
after least	18
after left end	13
after left hand	8
after leg	10
after length	23
after let	16
after let go	21			-8
after level	5
after lid		12
after like	9
after lime	22	-19
after line	6		-7
after linen	12
after linen closet		13		-19
after lint	13
after lip	-5			12
after list	4	11		-24
after lit	11
after lite		-6	14	-8
after little	-10		16		7
after live	30
after living room	-4			8
after lol	25
after long wall	10
after look	5
after lose	15
after lot	-5		11	-13
after lounge	22
after lower	-11	15
after luck	8
after lunch	24			-6
after machine	9
after main	21
after man		5
after maple	13	-14
after mark	22
after mask	33		-21
after mat	27	-4
after match		19
after mate		20	-10	-18
after mattress	5
after maybe	13		-8
after meantime		11	-11
after measure	12
after meet	6
after mind	29	-8	-19
after mine	-18	24		-17
after minimum	30	-24
after minus				7
after miss		14
after miter	23
after moisture	13
after morning	5
after mould		12
after mount	-10			34
after movers	15
after mr	6
after mrs					9
after much	5
after mud		15	-7	-20
after mud room	-9			16
after mush	-10		-9	19
after mushy	4
after my			17
after ne	28	-7		-13
after near	21
after nearly	25
after need		11
after need far and	16
after need far copula	14
after need far modal	17
after need far owed	8
after need far run-on	13	-11
after need far word	32			-11
after need here comma		8
after need here none	-9	44		-10
after need here past	39			-7
after need here present		20
after need here start	-23	36
after need here stop		5
after need sentence comma		40		-17
after need sentence imperative	30	-8
after need sentence modal	6
after need sentence none		66		-18
after need sentence owed	24	-6
after need sentence past	-12		8
after need sentence present	-4	13
after need sentence word	28
after needle	18			-9
after neighbor		4
after neutral	27	-12		-10
after new				18
after next	-13	19
after nice	-23	13		7
after nick	19
after night	15
after nobody	28
after none far and	11
after none far owed		15
after none far run-on	45
after none far word	28	-5
after none here copula	11
after none here imperative		13
after none sentence modal		17
after none sentence stop	10	-17	-5	-16	19
after north		-6
after north side	21
after notch		14
after nothing	16
after now				7
after nowhere				10
after number				5
after nursery	32		-12	-8
after oak	11
after off center		-19	-11	15
after office	-29	8		9
after oil	27
after once	8
after ones	-24	26
after oot	20
after opened up		10
after or	18
after order	-24				62
after others	-17			20
after ought				4
after oughta	14
after our				-15
after out of level	12
after outside	20
after outta		-18		13
after own	11
after owner		12
after p		13
after painted shut	16
after painter		14		-5
after pairs	28
after pantry				-13
after paper	9
after parking lot	18	-5
after part	9
after part's	-15			24
after past	34
after patch				15
after peel		14
after per	19
after pick	-14	23
after piece	15
after pieces	24		-16
after pile			5
after pin	14
after pine	-8			7
after pipe	8
after pit	17
after plane				9
after plaster		10	-12
after plate		-27		20
after please	-9	34		-28
after plenty	-37	25	28	-12
after plumb	-5	-12		24
after pocket	-5		18	-15
after point	16
after pop		10
after popcorn	-20	-15	28	-17
after porch	12	-9
after pour	21
after powder		-8		7
after powder room	-24		16
after pretty	-19			23
after profile	31	-26
after promise	-5	15		-8
after proud	13
after pt	-16			19
after pull	15
after punky	12
after push	40			-12
after put				15
after putty	-23		16	8
after quit	16
after r	23
after rain	17	-7
after rains	-9	18	-6
after rake	-27	19		5
after rate	9
after rattle	9
after re	24
after reach		-17			21
after ready	16
after real	-16		23
after rear	26
after reception	11
after red	-12		17
after redo	14
after rental	20
after replace	-21			33
after require	6	9	-10	-16
after reset			14	-6
after rest	-26	4	-16	21
after return	22
after returned far	-10		11
after returned far comma	-15	25		-5
after returned far copula	14
after returned far none	-11	11	8	-7
after returned far owed	-20	10	10
after returned far past	-17	-10	16	-4	12
after returned far present			15
after returned far stop			18
after returned here	14
after returned here and	19
after returned here past	27
after returned here start	20	-4
after returned sentence	-10			-21	12	20
after returned sentence and	-32		10		19
after returned sentence comma	-5	-35	-23	-38	10	34
after returned sentence copula	17
after returned sentence past	-11	-10	-11	-16	32
after returned sentence word	5
after ridge	-13	-28	7	12
after ring	11
after rise	8			-16
after rm	5
after road	14
after rock	5
after rocking				8
after rocks		-7
after rod		9
after roll	-16	-12	14	10
after room	18
after rooms	-11	-6	14
after roots	17
after rotten	18
after rough	8
after rough opening's	-26			13		19
after round	26
after row	10
after rub	19			-8
after ruiz	5
after rust				6
after rusted through	28			-9
after s		-23		13
after sag	12
after salon				5
after same				10
after saw	17
after scrap	17	-9	5	-18
after scrape	32
after scratch	17	-13
after screed	14
after screen	24
after scribe	33
after seam	12
after seams		-10		14
after seat	-7		18
after second	-9			27
after second coat	35	-8
after second floor	-9	-10		18
after see		13
after seize	19
after send	-8	9
after set	13
after she	-7	7
after shed	-44	13	15
after sheet	-19	6		12
after sheets				14
after shim		15
after shoot	12
after short		12
after shot	4
after should	-13	4		16
after shut	9
after shy	33
after side	17
after signal's		-7		10
after silicone	7
after silver	-7	22
after site	-20		36	-35
after skip	26
after slam	24	-6
after slide	19
after slope	22			-6
after slow	9
after small	25
after smell	25
after snap		9
after soft	20
after solid				5
after some		8
after somebody's	14
after somewhere	5
after soon	-10			15
after sorry	11		-9
after sort	27
after sound	27
after spare	-38	-29	46
after spin			-10
after spins	22
after spitting	10
after spoon	12
after spray	41			-7
after spun	18			-13
after square				-4	7
after squeak	17
after stack	-4	-5		5
after stain		13
after stair		12
after stairwell	-23	-12	21	-19	16
after stand	-5			7
after staple	15
after start	25
after station	-28		15	15
after steam	8
after steps		-10	15	-6
after stick	12
after still			20
after stock	-34	4	11	5
after store	-18	-31	14	-23		14
after story	7
after strap				8
after street	29
after stretch	10
after strike	14
after strip	16
after stub	-12			17
after stuck open	24
after study		-11	15	-11
after stuff	-14	18
after sub	-21	-12	-9	27
after supply	8
after support	16
after supposed					18
after sure	-17	23		-8
after swap				10
after sweat		10
after swell	13
after swing	-9					20
after tacky	-10	-7	19
after tae	13
after tag	-23	28
after talk		-13		11
after tank	19
after tap	27
after tape				15
after tell				21
after template	26
after than	8
after thank		-4		15
after the kid	-14			18
after the kids	8		-14
after the lady					15
after the wrong		4
after the yard		-17	-7		5	16
after their		-8
after them	6
after then	4
after there's	-9	19		-10
after they're	29
after they've	18			-7
after thing			-5		25
after think	7
after this	10
after those		5
after though	6
after through	18
after throw	16
after tie	23
after tight	18
after tighten	20
after til	20
after tile guy	-7	15
after tin	-17	-18	7	15
after tip	6
after toast	16
after toaster	21
after too big	30			-13
after too deep	-11	21
after too far	-9			14
after too high	34	-20
after too long	-15	21
after too short	32	-6		-6
after top edge	-10	21		-17
after touch	30
after towards	8
after town	14
after trade	-6	23
after trailer	-20	-36	26
after treat	12
after trim	-19	22
after trip	6
after tube	36	-6
after tubes		13	-14	-11
after twice	10
after twist	19
after underneath	8
after unit	27
after units	18
after unopen	-26	-10	32	-19
after upside down	25			-6
after upstairs	24
after use				18
after used far and	27
after used far copula	15
after used far imperative		8
after used far owed		9
after used far run-on	38			-6
after used here comma		-14		26
after used here imperative	5
after used here modal		-15		11
after used here none	-13	-31		40
after used here owed		-20	11
after used here past	17
after used here start	18
after used here stop	11
after used here word	7
after used sentence and				8
after used sentence comma				11
after used sentence imperative	-5
after used sentence none				28
after used sentence owed		8
after used sentence word		21
after utility	14	-20
after van	-45	-19	58
after very	7
after wait	20
after walk	21
after wall's	5
after walls	6
after walnut	7	-10
after warp						15
after water's				13
after waterlog	24
after way					6
after we	11
after weatherstrip	21
after weep	31
after weight	15	-7		-5
after well	14
after wet	27
after whenever	12
after where	16
after whistling				12
after white	-23	28
after whoever	13
after whole	5
after width	-16			7		15
after wind				12
after winter	23
after within	26
after without	15
after won't	6					7
after wont	7
after work	25
after worst	10
after would		13
after wouldn't	9
after wrap	-9
after wrong	4	-22	-14	-14		20
after yellow	15
after yep	10
after yet	-20	21
after you	7
after you'd				8
after you're	5
after your	9
again bought	9		13		-34
again have	27
again need	70	-75	28	-26
again returned				-19	24
again used			51	-40
ahead #		7		-9
ahead &	-31	23		8
ahead '	31			-7
ahead )	28	-6
ahead +	-6
ahead -	5
ahead /		4
ahead 3	-8			15
ahead @	38
ahead above	23
ahead acclimatising	20
ahead add				5
ahead adjust	20	-4
ahead again				15
ahead against	27
ahead ain't	15
ahead air	18
ahead alarm	20
ahead all				16
ahead almost			9
ahead already		-4
ahead am			4
ahead american	27	-13
ahead anchor	-8		16
ahead angle		-13		6
ahead another					5
ahead any	-7	14
ahead anybody	6
ahead anyhow	7
ahead anything	-8			15
ahead apartment	10
ahead are				8
ahead arm				12
ahead around	23
ahead arrive	-11		17	-8
ahead as	10
ahead ask	12
ahead at	6
ahead attic's	12		-15	-10
ahead away	6
ahead b	34
ahead baby	16
ahead backsplash		12
ahead bad	30	-12
ahead balance		-7	11
ahead balcony		13		-7
ahead ball	20			-12
ahead band	-5	12
ahead bare	20
ahead basement	8
ahead basement bath	-13	-5		21
ahead bath	34
ahead bathroom	14
ahead bc	28	-9
ahead bead		8
ahead beaut	7
ahead bed	21	-9
ahead bedroom 1				11
ahead before	5
ahead behind	8
ahead belly in	10
ahead below	22
ahead bend	25
ahead beside		7
ahead beto	11
ahead better	23	-10
ahead between	20
ahead big	17
ahead bill	7
ahead bin		21	-17	-13
ahead black	6			-9
ahead bled	16	-11
ahead bless	9
ahead block				17
ahead board	-26	12		7
ahead boards	30
ahead bolt	-5			21
ahead bond	-6	19
ahead bone	16
ahead book	-8		18
ahead bore	-13	-7		22
ahead borrow	18
ahead both	20			-5
ahead bowl	7
ahead br		-15		7
ahead bracket	10			-20
ahead brass	-5			15
ahead break		14
ahead bring		21
ahead bro	13
ahead brown	-6			15
ahead bubble	9
ahead build		-13		5
ahead bulkhead	-16			20
ahead burn				18
ahead bury	7
ahead button				8
ahead buy		9
ahead buzz	9
ahead c	13
ahead cab	-14		11	7
ahead came off	20
ahead can	4
ahead cap	-18			30
ahead care	22			-5
ahead carry		10
ahead catch	7
ahead center	14
ahead chalk	16
ahead change				9
ahead channel	24
ahead check	4
ahead choose	12
ahead chrome	-16	21
ahead chuck		8
ahead chunk	9
ahead circuit	11
ahead clamp				15
ahead cleaner				5
ahead clearance	6
ahead client	30	-20
ahead clip		-13		8
ahead coat			13
ahead code	37	-26
ahead coffee	17			-8
ahead cold	25
ahead cold side's	25		-6
ahead color			-4	11
ahead complete	18
ahead contact			15	-12
ahead contractor	4
ahead cope	26	-7
ahead corner	-9
ahead corridor	25			-7
ahead could	11			-19
ahead couldn't	15
ahead count			10
ahead counter	17
ahead cover	5
ahead crawl				11
ahead crosses		4
ahead crown	15	-7		-12	10
ahead crush	17
ahead cure				13
ahead customer	14
ahead cut out	16
ahead d	13		-5	-7
ahead dad	25	-16
ahead damp	23
ahead dark	9
ahead date	8	13		-29
ahead deck	13
ahead deep	21
ahead den		9		-19
ahead dense	5
ahead dent	17
ahead dentist	5
ahead dial	30		-12	-17
ahead dig				5
ahead ding	19
ahead dip		17	-7	-8
ahead disconnect	35	-10		-16
ahead doesn't	21
ahead dog	9
ahead don't	4
ahead dont			6
ahead doubl	11
ahead downstairs	15
ahead draft	16
ahead drain	6
ahead draw	14			-6
ahead drill	18
ahead drip	14
ahead driveway	9
ahead drop	25
ahead drywall	9
ahead dump				13
ahead e		-6
ahead each	35	-18
ahead early		-14		7
ahead ease	24
ahead eat		-7		30
ahead edge				15
ahead edges	-20		11	13
ahead eggshell	-23	22
ahead either	31	-17		-6
ahead electric	13
ahead electrician	10
ahead else	24
ahead em	19
ahead empty	18
ahead end	15
ahead enough			25
ahead ensuite	16
ahead entry	23	-14	-7
ahead epoxy	-5
ahead even		-5		6
ahead ever		4
ahead everything				13
ahead exam					13
ahead exhaust	14
ahead exterior	15
ahead extra		-17	-16			14
ahead face	15
ahead falls	17
ahead falta		12	-9	-15
ahead far		-6				12
ahead feed	23
ahead feel	23
ahead fell		21	-23	-19
ahead fella	17
ahead fence	-14	-12		23
ahead fifth	-4	-17		15
ahead figure		14
ahead file	14
ahead fill				12
ahead finally	18	-6
ahead find	4
ahead finish				28
ahead fire	17			-4
ahead first	-19		7
ahead first coat	-6			17
ahead first fix	5
ahead fish	20
ahead fit				5
ahead fix		-12		7
ahead flap	9
ahead flaps	16
ahead flash	19
ahead flexible	-25	32
ahead float				8
ahead flood test	-10		17
ahead floor's	17
ahead flush	10			-13
ahead foam		-6		27
ahead foil	-4	-10	19
ahead footings	16	-7		-4
ahead fourth	15
ahead foyer	13
ahead framing's	17
ahead fre	-5	-9	20	-17
ahead fresh	-18		13
ahead front				14
ahead front room	29			-15
ahead fronts	18			-11
ahead full	7
ahead gable	29
ahead gal	-22					25
ahead galvanize	8
ahead garage	18
ahead garbage	17
ahead gary	-13		19	-6
ahead gas				12
ahead girls	10
ahead god		-10
ahead golf	24
ahead gonna				-9
ahead good	8
ahead grab		5
ahead gray	-17		21
ahead green	-35	29
ahead grout	12	-16		4
ahead grunt	-14	-16	8	13
ahead guess	-5	17
ahead guest room	7
ahead guy	29
ahead hair	5
ahead hairline crack	5
ahead half	-7	5	10	-9
ahead hall	32
ahead hall closet	-20	-5	24	-13
ahead hand		-17	10
ahead happy	16
ahead hard	16	-16
ahead hardy	7
ahead hasn't	25	-9
ahead haul	23
ahead haven't	-5	22	-12	-14
ahead he'd	18
ahead he'll				-9
ahead he's	4
ahead headroom	12
ahead hear	6
ahead hearth	16	-18
ahead height	24			-10
ahead height's	22			-8
ahead hendersons	15
ahead here			22
ahead here's	6
ahead high	13
ahead higher		5
ahead him	-7	9	10	-15
ahead hinge	6
ahead ho		5		-4
ahead hold	6
ahead hole	10
ahead holes	5
ahead home	20
ahead homeowner	20
ahead honeycombing	7
ahead hook		-7		17
ahead how	-19		16
ahead hub	10
ahead hum	16
ahead husband	12
ahead i'd		32		-7
ahead i'm		5
ahead i've			32
ahead inch	-26	28
ahead inside		7
ahead inspector	27
ahead install				14
ahead instead	21			-13
ahead insulate	22
ahead isn't	23
ahead it'll			10
ahead itself	25
ahead jacket	8
ahead jess				9
ahead job	-4	-8		24
ahead joker	30			-25
ahead kick	17
ahead kid's room	5
ahead kill	14
ahead kind	19	-10
ahead kindly	-17	22
ahead kit				9
ahead knees	11
ahead knit	12
ahead knock	24
ahead l	26	-16		-12
ahead la	5
ahead label	20
ahead ladder	-7			10
ahead lady	24	-13		-16
ahead lady's	21
ahead lag		7	-9
ahead lake						10
ahead land	16
ahead landlord	15
ahead laser	24	-18
ahead last	-18		21	8
ahead latch	27
ahead laundromat	30			-14
ahead laundry	30
ahead laundry room	11
ahead layer	-13	-14		11
ahead layers	11
ahead lead	8
ahead lean	20
ahead leaning	9
ahead least		12
ahead leave			8
ahead led		5
ahead left hand	14
ahead leg	10
ahead legs	-23	14	-18	9
ahead let go	34
ahead level	5
ahead library				13
ahead lid				8
ahead lid's	16
ahead lift	22
ahead line				12
ahead linen closet	-18			13
ahead lip	-7			15
ahead list	30	-13
ahead listen	13
ahead lit	-10	-5		19
ahead little	28			-11
ahead living room	24
ahead load	13
ahead lock	-7		5		9
ahead lol	13
ahead look	21
ahead loop	17
ahead lord	19
ahead lose	5
ahead lot		-15				8
ahead low				8
ahead lower	13
ahead luis	33			-11
ahead machine	26	-13
ahead main	24
ahead man	21
ahead mark	11
ahead master	11
ahead match	16
ahead mate	-30	33	-5	-7
ahead maybe	-14		33
ahead me		20
ahead measure	15
ahead meet	21
ahead middle		6
ahead mind	24
ahead miss		19
ahead mix				5
ahead moisture	19
ahead moisture's	23
ahead mold	15
ahead more		11
ahead morning	13
ahead mortar	24
ahead mount	-7			20
ahead mouse	-6			16
ahead movement	15
ahead mr	12
ahead mrs	8
ahead much				9
ahead muck	-8			14
ahead mud		6
ahead mudd	18	-9
ahead mudroom	19
ahead must	19
ahead my	5
ahead n	6
ahead nah	15
ahead nail				6
ahead nail holes				7
ahead near	19
ahead nearly		-7		15
ahead need		21
ahead neighbor	31	-6	-21
ahead nest	-7	-5		15
ahead never	8
ahead new				6
ahead news	11
ahead next	17			-16
ahead niche		5
ahead nick	26
ahead nobody	14
ahead noon		5
ahead north wall	7
ahead not even	8
ahead notch	18
ahead note	15
ahead nowhere		6		-7
ahead nursery	-18	-17	-11	29
ahead oak	-27	-8		27
ahead off	5
ahead office	14
ahead oil	22
ahead okafor's	-5			14
ahead old	21
ahead once	29
ahead one's	37
ahead ones	29
ahead opened up	24
ahead opening's					10
ahead or	-6	6	11	-15
ahead order		18
ahead other			7
ahead oughta	8
ahead out of plumb	27
ahead outside	-5	8
ahead outta	33	-5
ahead owe	-11	20		-6	5
ahead own	20
ahead owner	5
ahead p	-22			23
ahead pack	-5			20
ahead painted shut	17
ahead painter	29
ahead pantry				14
ahead paper	-15	22
ahead parlor	11
ahead part	20	-8		-11
ahead pass	4
ahead patio	24
ahead pay	26	-5		-10
ahead peel	16
ahead phone	14
ahead pick					15
ahead piece	22
ahead pile	-6		17	-11
ahead pin	-11	-11		11
ahead pipe		-9
ahead pitch	14
ahead place	-4			18
ahead plan	15
ahead plane	19
ahead plaster		12
ahead plenty	-7		20
ahead plumb	22			-13
ahead plumber		4
ahead plus	-19	11	11	-9
ahead pool	12
ahead porch	6
ahead pour	13	-10
ahead powder room	25
ahead pressure	10
ahead prime	15
ahead proud of	6
ahead pull	20
ahead pump				15
ahead push	25
ahead put				7
ahead putty	23
ahead quit	19
ahead quote	19
ahead r	-13	25		-15
ahead rain	-9	-15	14			15
ahead raise	15
ahead rake	32	-18
ahead rate	19
ahead raw	5
ahead reach	14
ahead read	25
ahead ready	-16	18		-5
ahead rebuild	-22	-14		32
ahead red	20
ahead redo	-9
ahead rehang				8
ahead relay				10
ahead remains	24
ahead remind			8
ahead rental	19
ahead repair	-31	-19		37
ahead replace	-8			17
ahead report	19	-5
ahead require	-5	9	9	-27
ahead rest	-46		34
ahead restroom	27
ahead return	-10			-21		20
ahead reveal	13
ahead reveal's	17	-6
ahead rick		4
ahead ridge	20	-13
ahead ring				20
ahead rink		16		-10
ahead rise	15
ahead rm	7
ahead rod		12		-13
ahead roof	23
ahead room	31
ahead roots	20
ahead rot				6
ahead rotten		17	-9	-15
ahead rough	8
ahead round	40
ahead row		-16
ahead rub	11
ahead rubber	-9	29		-23
ahead rudy	15
ahead run's	37			-8
ahead runner	37	-15		-12
ahead rust	5
ahead s	18
ahead sag	11
ahead sage	-32	26	7	-12
ahead salon	16
ahead sand	10
ahead sander	-13	23		-10
ahead save	9	-12
ahead scrap	19
ahead scrape	26
ahead screed	31
ahead screen	10
ahead screwdriver	21
ahead scribe		9
ahead scuff	17
ahead seal	6
ahead seam	9
ahead seat	15
ahead second	-15	14
ahead second coat				-5
ahead second floor's				13
ahead send	-13					21
ahead setback	35	-28
ahead sewing room	-37	-34	37
ahead shave	19
ahead she	9
ahead she'd	12
ahead she'll	11
ahead she's	8
ahead sheath		11		-12
ahead shed		-5		13
ahead sheet	12
ahead shift	8
ahead ship	15	-4		-20
ahead shoot			18	-14
ahead shop	-26	12				10
ahead short	-14	42
ahead shot	28			-10
ahead shove	-11	-13	23	-23
ahead show	12
ahead shut	22
ahead shy	-10	26
ahead side	9
ahead sign			11
ahead silicone		-11		-6	11
ahead since				6
ahead sinking	-11	-7		18
ahead sir	15
ahead sister				4
ahead size	25
ahead skim	6
ahead skirt				12
ahead slab	30			-12
ahead slab's	7
ahead slid	-33			37
ahead slide	18
ahead slip	13		-9	-18
ahead slope	14
ahead smell	6
ahead snake	24
ahead snap	23
ahead snug		-6		5
ahead soft	-25	11				6
ahead soft close	21			-15
ahead soft spot	7
ahead solid		-4
ahead some		4		-31
ahead somebody		7
ahead somebody's	25
ahead something	-8			17
ahead sorry	9
ahead sound	35
ahead spare	-9	-7	26	-7
ahead special	27
ahead spend	-23	-16	-21	32
ahead spin	28
ahead spins	8		7	-16
ahead splash	24
ahead splice	11
ahead spot	8
ahead spray	11
ahead squeak	-10			17
ahead stack		-28	8	14
ahead stagger	-5	-4		13
ahead stain	13
ahead stairs	-19			27
ahead stairwell	21
ahead staple	20	8		-31
ahead start	20
ahead static	23
ahead stay		-12	23
ahead steam	-15			20
ahead step				13
ahead steps	43	-18		-7
ahead stock	-7	-13	17	-6
ahead stop		19
ahead store	-30	15	-28	-38	26
ahead straighten	20
ahead strap	-12
ahead street	13	-16			14
ahead strike		15
ahead strong	8
ahead stub	-4	-7		14
ahead stub's	-19	23		-8
ahead stuff	-7	8
ahead super	19
ahead supplier	-13	8	13
ahead supply				-10
ahead supposed		8
ahead sure	5
ahead swap				10
ahead swear	19
ahead sweat	18
ahead sweep	28	-16	-12
ahead sweet	22
ahead swing		19		-4
ahead system	11
ahead t	10
ahead tack	14
ahead tae	9
ahead tag				7
ahead take						10
ahead talk	13
ahead tank	6
ahead tank's	18
ahead tap	18
ahead tape	10
ahead tear	8
ahead temp	25
ahead template	9
ahead tenant	12
ahead test	16
ahead than	7
ahead that'll	-11	6	-26	-31	21
ahead the kid	12
ahead the lab	9
ahead the lady	-5		8
ahead the lady's	28
ahead the wrong	11
ahead the yard	13
ahead they	30
ahead they're	13
ahead thick	-12		-11	27
ahead thing		-5
ahead things	17
ahead third		-17	9
ahead though	-7	-10			12	17
ahead through				13
ahead throw					7
ahead tie	12	-10
ahead tight	31
ahead tighten	7
ahead til	-12	16
ahead tile guy	-10	16
ahead time	-17		7
ahead together	5	-8
ahead tony	-26	-4	19	7
ahead too long	18
ahead top	10
ahead touch	8
ahead touch up	20
ahead toward	15
ahead trace	7
ahead trim		5
ahead trip	22	-8
ahead truck	14			-7
ahead try			5
ahead tube	-16			21
ahead tubes		8
ahead u	21
ahead undercut	23
ahead underneath	13
ahead understand	20			-5
ahead unit		-5				16
ahead unopen	-16	-5		-5		25
ahead upper				7
ahead upstairs	16
ahead us		18
ahead use				17
ahead van	-22	-14	31	-22
ahead vent	-11			9
ahead walk					13
ahead wall's	18
ahead walls	18
ahead walnut	25
ahead wash	19
ahead waste	10
ahead water proof	-15		18
ahead wax		18
ahead we'd	-19	28
ahead we'll	-7	28
ahead we've		-21	19	-17
ahead weatherstrip	24	-18
ahead weep	13
ahead weight	32
ahead weld	-6	-15	19	-5
ahead were	40			-8
ahead wet	10
ahead what's				-8
ahead when	13
ahead while	10
ahead white	-31	21	23	-8
ahead whitlock's	25			-7
ahead who	25
ahead who's	4
ahead whoever	25
ahead why	16
ahead wide	17
ahead will		20
ahead wind		17		-20
ahead wipe	19
ahead wire	29
ahead within	18
ahead without	-27	28	11
ahead won't latch	4
ahead wont	20
ahead work			10
ahead wouldn't		10
ahead wrong	26
ahead wrote	20
ahead x		12
ahead ya				12
ahead you	21
ahead you're		16		-6
ahead your	17
any	193	-82	-134	-75	-285	-300
area after none far	47			-43
area beside nothing		-20	-8	26
area cue need	-22	28
area cue used				12
area flawed	20
area left #	-19	-9	-11	39
area left about	51			-35
area named before surface	9
area named before word	-13	-22	-10	25
area null none no		-13		9
area right #	-12			22
area says none no		-13		9
area says past before		-8	-18	15
area says past behind		-13		12
area says present behind	30			-22
area sold so false			-5	5
area sold so true	-9	16
area verb null no		-13		9
area whole clause	-28	-7		39
bare after bought far	6
bare after bought here	23
bare after bought sentence	31
bare after need sentence	6
bare after returned far			4
bare after returned here	24
bare beside add	33
bare beside am	17
bare beside are	22
bare beside bag	-18			22
bare beside bead		-6		7
bare beside blow	15
bare beside bolt				10
bare beside borrow	18
bare beside break		5
bare beside bring		6				7
bare beside bubble	9
bare beside buy	51	-39
bare beside buy b other	36	-25
bare beside buy b person	-10	17
bare beside buy i person	6
bare beside buy pp person	16	-12
bare beside can't	9
bare beside cap	-11			18
bare beside carry	17
bare beside choose	9
bare beside clear	24
bare beside cover		-5
bare beside cut	8
bare beside dig	13
bare beside ding	11
bare beside don't	12
bare beside drive	23			-12
bare beside drop	5
bare beside dry	10
bare beside dump	10
bare beside ease	5
bare beside eat	28			-8
bare beside figure	9
bare beside file	12
bare beside fix	20
bare beside flash	16
bare beside flip	26
bare beside forget	29
bare beside fre	23
bare beside get	18
bare beside give	29
bare beside go	9
bare beside grind	21
bare beside guess	32	-17
bare beside hang	8
bare beside has	13
bare beside have	7
bare beside have b nobody	47		-18
bare beside have b other		7
bare beside have b person	11
bare beside head	9
bare beside hook	16
bare beside hum	9
bare beside i'll	8
bare beside i've	8
bare beside is	14
bare beside knock	9
bare beside know			9
bare beside lay	38
bare beside leave	11
bare beside level				10
bare beside like	9
bare beside look	5
bare beside lower	6
bare beside match	7
bare beside measure bp nobody	-6				18
bare beside measure bp other	19
bare beside measure bp person	7
bare beside measure bpp nobody				8
bare beside measure bpp person				17
bare beside measure i person	8
bare beside measure pp person	14
bare beside measure s person	9
bare beside meet	10
bare beside miss	23
bare beside mount	12
bare beside move i nobody	21
bare beside move i other	8
bare beside move i person	9
bare beside move p nobody	22			-5
bare beside move p other	32
bare beside move p person	25			-4
bare beside move pp nobody	16
bare beside move pp person	8
bare beside move s other	22
bare beside need	7
bare beside need b nobody	16
bare beside need b person	10
bare beside need s nobody		11
bare beside need s other	7
bare beside notch	8
bare beside oil	19
bare beside open	12
bare beside order		18
bare beside other b nobody	10
bare beside other b other	9
bare beside other b person	23
bare beside other i nobody		10
bare beside other i person	16
bare beside other p nobody	25
bare beside other p other	7
bare beside other pp nobody					10
bare beside other pp other	23
bare beside other pp person						12
bare beside other s person	11
bare beside own	15
bare beside pack	-10			12
bare beside paint				15
bare beside patch	9
bare beside peel	4
bare beside pick		-10			14
bare beside place	34			-5
bare beside plane	6
bare beside plug	-9			19
bare beside pop	19
bare beside pour		13
bare beside prime				9
bare beside pull	6
bare beside put	4
bare beside quote	11
bare beside redo	21
bare beside replace	-5			17
bare beside reset	11
bare beside return	-30		23			18
bare beside rip			5
bare beside sand	11
bare beside save	-8		16
bare beside say b nobody	12
bare beside say b person	28
bare beside say s person	22
bare beside scratch			7
bare beside screw	34
bare beside scribe		11
bare beside see b other				10
bare beside see b person	8
bare beside send	23
bare beside set	8
bare beside shave	12
bare beside show	11
bare beside shut	5
bare beside sign	-20		23
bare beside sister		-12		4
bare beside skim	8
bare beside snap	8
bare beside snug	11
bare beside square	15
bare beside stack	35			-21
bare beside stand	18
bare beside stay	22
bare beside stick	28
bare beside stop		9
bare beside straighten	17
bare beside strip	19
bare beside supply	-8	15
bare beside swap	12
bare beside tack	14
bare beside take						15
bare beside tape	18
bare beside think	19
bare beside throw	30	-10
bare beside tie	11
bare beside tighten	6
bare beside turn	15
bare beside undefined has nobody	11
bare beside undefined has other	11
bare beside undefined has person	10
bare beside undefined is nobody	17
bare beside undefined is other	23
bare beside undefined will other	17
bare beside undefined will person	6
bare beside use	19
bare beside use b other	14
bare beside use b person	30			-19
bare beside use pp nobody	4
bare beside use pp person	17			-7
bare beside walk	23
bare beside want	9
bare beside weep	7
bare beside will	10
bare beside wipe	9
bare beside won't	10
bare beside wont	20
bare beside work	15
bare beside work bp nobody	13
bare beside work bpp nobody	9
bare beside work bpp person	20
bare beside work i nobody	10
bare beside work i other	6
bare beside work i person	12
bare beside work p nobody	32
bare beside work pp nobody	6
bare beside work pp person	18
bare beside wouldn't	7
bare beside wrap	6
bare buy imperative behind		11
bare buy owed before	-19	27	-5	-5
bare buy owed behind	18
bare buy past behind	16	-12
bare buy present behind	35	-26
bare have imperative behind	9
bare have present behind	6
bare left &	-11	11
bare left '	10
bare left (	10	-12			10
bare left -	23
bare left /	24
bare left @	9
bare left Q	13
bare left T	14
bare left about	28
bare left above	7
bare left across	7
bare left after	31
bare left again	7
bare left against	21
bare left all	30			-5
bare left along	16
bare left already	29	-7
bare left and	19
bare left around	7
bare left ask	5
bare left attic	19
bare left back	5
bare left bare	17
bare left bath	10
bare left bathroom	8
bare left be	30
bare left bedroom	10
bare left before	20
bare left behind	13
bare left bend	5
bare left beside	10
bare left blow	16
bare left box	16
bare left break	22
bare left bring						6
bare left buy	38	-27
bare left c	15
bare left can't	9
bare left caulk	14
bare left choose	9
bare left clean	13
bare left clear	15
bare left closet	16
bare left come	-5				15
bare left dead	6
bare left dining room	12
bare left do	36
bare left down	13
bare left drop	9
bare left each	13
bare left eat	17			-6
bare left em		4
bare left enough	12
bare left entry	7
bare left every				9
bare left except						19
bare left family room	4
bare left fill	8
bare left finish	14
bare left fit				11
bare left for	28
bare left glue	17
bare left good	20
bare left gotta	4
bare left half	-13		20
bare left hall	5
bare left hall bath			14
bare left has	22
bare left have	35
bare left he	9
bare left hit	13
bare left how	15
bare left i	11
bare left i'm	30	-8
bare left if	10
bare left in	7
bare left inside	29	-9
bare left into	10
bare left it	23
bare left it's	11
bare left its	4
bare left job	-9			13
bare left just	28
bare left kill	7
bare left laundry	7
bare left lay	39			-5
bare left leave	12
bare left lift	6
bare left like	10
bare left little	5
bare left living room	4
bare left loose	6
bare left make	5
bare left master	9
bare left master bath	12
bare left me	22	-6
bare left measure	6
bare left meet	10
bare left miss	34
bare left n	14
bare left near	9
bare left need	20
bare left nobody	8
bare left not	15
bare left office	11
bare left on	21
bare left once	8
bare left only	35
bare left open	6
bare left or		10
bare left order	-5	13
bare left other	5
bare left out	25
bare left outta	19
bare left owe	23	-4
bare left pack	26			-23
bare left paint	13
bare left pantry	21
bare left pass				6
bare left patch	8
bare left pick	15
bare left plug	13
bare left pop	6
bare left porch	12
bare left prime	-14			17
bare left pull	14
bare left replace	-9	-5		17
bare left right	-13	19
bare left ring	15
bare left roll	6
bare left round	11
bare left scratch			12
bare left screw	20			-8
bare left scribe	9
bare left seal	9
bare left send	32
bare left she	14
bare left shim	5
bare left short	28	-17
bare left shut	10
bare left sign	-20		23
bare left since	14
bare left sit		10
bare left snap	9
bare left snug	11
bare left so	6
bare left split	6
bare left stick	21
bare left strip	19
bare left take	-4			-15		31
bare left tape	9
bare left than	11
bare left that	21	-7
bare left that's	41
bare left the	12
bare left the wrong	14
bare left them	14
bare left then	11
bare left there	29
bare left there's	25
bare left thing	18
bare left through	37			-9
bare left tile	19
bare left time	19
bare left too	22
bare left top		7
bare left touch	5
bare left toward	6
bare left trim	20
bare left turn	12
bare left under	9
bare left until	18
bare left up					7
bare left use	14
bare left way	5
bare left we	13
bare left we're	27	-11
bare left where	5
bare left which	13
bare left why	12
bare left will	8
bare left without		17
bare left won't	8
bare left wouldn't	7
bare left your	12
bare list have	40
bare list need	-4	11
bare list used	27			-10
bare measure imperative behind					7
bare measure modal before	-5					21
bare measure modal behind		14
bare measure owed before	8
bare measure owed behind	6
bare measure past before			4
bare more		-9
bare move modal before	12
bare move owed before	-7		24
bare move past behind	34
bare move present before	24
bare move present behind	14
bare named here area	14
bare named here defect	22
bare named here finish	15
bare named here fixture	11
bare named here role	16
bare named here surface	7
bare named here word	16
bare named here work	25
bare nameless	29
bare need modal before	31	-11
bare need modal behind	4
bare need owed before	12
bare need past before		8
bare need past behind	10
bare null copula before	12
bare null imperative behind	5
bare null modal before	33
bare null none no	6
bare null owed before	20
bare null owed behind	14
bare null present behind	6
bare other copula before	4
bare other imperative behind	15
bare other modal behind	14
bare other owed behind	26
bare other present behind	11
bare right &	-11	27		-8
bare right '	12
bare right (	-5	-16				22
bare right +		9		-25
bare right /	7	-23	9	-22
bare right @	45
bare right Q	32
bare right T	41
bare right a	10
bare right across	9
bare right ain't	11
bare right all	16
bare right along	20
bare right already			14
bare right another	16
bare right are	12
bare right aren't		9
bare right arrive	25
bare right at	7
bare right back	26
bare right bag	22
bare right behind	30
bare right below	5
bare right blow	5
bare right bolt	17
bare right both				11
bare right box	23
bare right break	15
bare right bring	30
bare right burn	8
bare right can't	11
bare right caulk	5
bare right center	5
bare right clean	8
bare right clear	7
bare right close	4
bare right complete	31	-13
bare right core				10
bare right crush	6
bare right cut			4	-12
bare right didn't	28
bare right dig	6
bare right down	48
bare right drill	5
bare right dry	9
bare right dump	9
bare right every	21
bare right fill	18
bare right finally	16
bare right fine	10
bare right finish	27
bare right fit				4
bare right fix				6
bare right flash	12
bare right flush	7
bare right get	13
bare right give	16
bare right glue	6
bare right go	20
bare right gonna	24
bare right good	27
bare right grout	6
bare right hasn't	-7	13
bare right have	22
bare right head		-6
bare right her	5
bare right here	-5		20
bare right him	11
bare right hold	22
bare right hook	7
bare right i			13
bare right if	4
bare right is	6
bare right isn't	12
bare right it's	11
bare right just	18
bare right keep	4
bare right land	14
bare right lay	25
bare right leave	12		-8
bare right loose	18
bare right make	10
bare right me	17
bare right mount	6
bare right move	7
bare right my	15
bare right need	20
bare right never				13
bare right next		8
bare right no	12
bare right nothing	7
bare right of	38
bare right off	19
bare right only	9
bare right open	20
bare right order	46				-17
bare right out	21
bare right over	32
bare right pack	-10	18
bare right pass	11
bare right peel	-11	18
bare right pin	8
bare right pitch	5
bare right rattle	8
bare right read	7
bare right replace				4
bare right return	5
bare right right	10
bare right rip	6
bare right rock	5
bare right roll	-12		20	-12
bare right rough	9
bare right run	19
bare right rust	4
bare right say	12
bare right screw	29
bare right seal	18
bare right send	23
bare right short	42	-7
bare right shot	-9	17
bare right sit	10
bare right snap	8
bare right so	6
bare right some	8
bare right somebody	11
bare right squeak	7
bare right stand	14
bare right stay	12
bare right still			7
bare right stretch	21
bare right strip	6
bare right stuff	-8	7
bare right swap	9
bare right take	23
bare right tape	-8		12
bare right test	9
bare right than	15
bare right the	19
bare right them	4
bare right there		7
bare right they	-16	-5	20			11
bare right those	8
bare right til	11
bare right top	13
bare right toward	7
bare right turn	19
bare right under	33
bare right up	28
bare right use	12
bare right walk	8
bare right want	4
bare right we	20
bare right were	18
bare right what	12
bare right when	18
bare right where	14
bare right while	10
bare right will	24
bare right wire	14
bare right without	5
bare right wobble	9
bare right won't						16
bare right wont	6
bare right you	8
bare say imperative behind	28
bare say modal before	9
bare say owed behind	11
bare say past before	28
bare say past behind	13
bare say present before	15
bare says copula before	7
bare says copula behind	6
bare says imperative before	4
bare says imperative behind not	19
bare says modal before	23
bare says modal behind	5
bare says none no	6
bare says none no not	12
bare says owed before not		5
bare says owed behind not	4
bare says past before not	14
bare says present before	4
bare says present before not	20
bare says present behind	13
bare see imperative behind	10
bare see modal behind				6
bare see owed behind	10
bare see past before	7
bare see past behind			7
bare see present before	5
bare then buy b	-7	-34			48
bare then buy pp	35				-10
bare then have b			8
bare then have pp	15
bare then measure b	17
bare then measure bp	17	-7
bare then measure i	28
bare then measure s	10
bare then move i	11
bare then move p	10
bare then move pp	15
bare then move s	10
bare then need b	38
bare then need pp	11
bare then need s	6
bare then other p	5
bare then return s	5
bare then say pp				5
bare then say s	14
bare then see b	5
bare then see pp	8
bare then undefined will	14
bare then use pp	12
bare then work i	20
bare then work pp	15
bare then work s	12
bare use past before	6
bare use past behind			7
bare use present behind	40			-26
bare verb add behind	31
bare verb adjust before	15
bare verb arrive before	31
bare verb back before	8
bare verb be before	5
bare verb bind before	5
bare verb blow before	9
bare verb blow behind	16
bare verb bore behind				9
bare verb box before	26
bare verb box behind	-8	17
bare verb break behind	26
bare verb bring before		-10	16
bare verb bring behind	-6	9				10
bare verb build before	12
bare verb burn before	4
bare verb buy behind	17
bare verb buzz before	6
bare verb call behind	10
bare verb can behind	16
bare verb cap behind	28			-9
bare verb catch before	9
bare verb caulk before	5
bare verb caulk behind	11
bare verb change before	-5			17
bare verb change behind	4
bare verb chase before	5
bare verb clean before	8
bare verb clean behind	13
bare verb clear behind	9
bare verb clip behind	17
bare verb close before	4
bare verb close behind	21
bare verb count behind	20
bare verb cover behind	4
bare verb crack before	-18	12		5
bare verb crack behind	8
bare verb cup before	11
bare verb cut before		11
bare verb cut behind	9
bare verb deliver before			14
bare verb dig behind	10
bare verb do before	21
bare verb don't before	19
bare verb don't behind	11
bare verb drain before	10
bare verb drill before	7
bare verb drill behind	19
bare verb drive behind	24			-9
bare verb drop behind	5
bare verb dry before	-9		19
bare verb dump before	26
bare verb ease behind	8
bare verb end behind	11
bare verb feel behind	6
bare verb figure behind	26	-8
bare verb file behind	10
bare verb fill before	12
bare verb finish before	16
bare verb finish behind	9
bare verb fit before				6
bare verb fit behind				9
bare verb fix behind	16
bare verb flush before	5
bare verb flush behind	14	-5
bare verb forget behind	11
bare verb frame before	17
bare verb frame behind	11
bare verb fray before	9
bare verb fre behind	23
bare verb freeze before	12
bare verb get behind	9
bare verb give before	20
bare verb give behind	18
bare verb glue before	5
bare verb glue behind	26
bare verb go behind	8
bare verb gonna before	15
bare verb grind behind	18
bare verb grout before	10
bare verb guess behind	31	-15
bare verb hang before				5
bare verb hang behind	6
bare verb has before	5
bare verb have behind	6
bare verb hold before	11
bare verb i'll behind	20
bare verb know behind			12
bare verb land before	11
bare verb latch before	7
bare verb lay before	40	-20
bare verb lay behind	43
bare verb leak before	8
bare verb leave behind	14
bare verb level behind	-8			17
bare verb lift before	13
bare verb lift behind	7
bare verb like behind	25
bare verb listen behind	12
bare verb miss before	16
bare verb miss behind	27
bare verb move before	9
bare verb mud before	20	-5
bare verb nail before	10
bare verb nail behind	9
bare verb need behind	6
bare verb notch behind	4
bare verb null before	12
bare verb null no	6
bare verb open before	12
bare verb open behind	12
bare verb order before		13			-8
bare verb order behind		12
bare verb paint before	16
bare verb pass before	8
bare verb patch before	-20			23
bare verb patch behind	24
bare verb pick behind		-8			16
bare verb pitch before	8
bare verb place behind	43			-24
bare verb plane behind	5
bare verb plug before	10
bare verb plug behind				13
bare verb pour behind	-8	16
bare verb prime behind				9
bare verb put before	22
bare verb put behind	13
bare verb rattle before	9
bare verb read before	10
bare verb redo behind	28
bare verb remind behind	19
bare verb replace before				12
bare verb replace behind	11
bare verb reset behind	18
bare verb return before	14
bare verb rip behind			6
bare verb rock before	5
bare verb roll behind	9
bare verb rough before	9
bare verb run before	16
bare verb save behind	-7		16
bare verb say before	18
bare verb screw before				12
bare verb screw behind	35
bare verb scribe before	16
bare verb scribe behind	16
bare verb seal before	18
bare verb seat before	11
bare verb send before	-18	17	7
bare verb set behind	12
bare verb shim before	14
bare verb show before	-14		15			5
bare verb show behind	12
bare verb sign behind	12
bare verb silicone before	24
bare verb silicone behind	17
bare verb sister behind		-6		21
bare verb sit before						15
bare verb skim behind	5
bare verb snap before	13
bare verb snap behind	7
bare verb snug behind	7
bare verb split behind				7
bare verb squeak before	7
bare verb stain before		10		-6
bare verb stain behind	16
bare verb stand before	18
bare verb stand behind	15
bare verb stay before	8
bare verb stay behind	14
bare verb stick behind	18
bare verb stop behind	31
bare verb straighten behind	20
bare verb strip before	4
bare verb stuff behind	-12	6		6
bare verb supposed before	23
bare verb swap behind	16
bare verb swing behind		9
bare verb tack behind	14
bare verb take before	29
bare verb take behind						31
bare verb tape before	6			-8
bare verb tape behind	22
bare verb tell before	14
bare verb tell behind	10
bare verb text behind	6
bare verb think behind	9
bare verb throw behind	29	-5
bare verb tie before	13
bare verb tie behind	13
bare verb tighten behind	6
bare verb tile before	5
bare verb touch before	6
bare verb trim before	17
bare verb trim behind	27
bare verb trip before	12
bare verb turn before	13
bare verb turn behind	4
bare verb use before	8
bare verb walk behind	26
bare verb want before	13
bare verb weep before	5
bare verb will behind	8
bare verb wire before	18
bare verb wobble before	13
bare verb work before	11
bare verb work behind	12
bare verb wouldn't behind	-16	20
bare whole clause	6
bare work imperative before	5
bare work imperative behind	9
bare work modal before	23
bare work modal behind	15
bare work owed before	7
bare work past before	14
bare work present before	18
beside add				6
beside add Q	-12			18
beside add b nobody	15			-25
beside add b other		5		-5
beside add pp nobody	-36	-16	-5	39
beside am	17
beside am is person	17
beside are Q	30
beside are all			16
beside are in	-13			26
beside are on	-11	-7		27
beside are up	11	-13	-7
beside arrive	-12		18	-10
beside arrive pp other	-18	5	22	-12
beside ask b other	-11	16
beside ask pp person	5
beside ask the		13
beside bag b other	-18			22
beside balance	-18		18
beside be G	16
beside be a	-5		12	-7
beside be b person		20		-14
beside be back	-21	27		-13
beside be in	8
beside be no	9
beside be out	14
beside be p other	7
beside be painted shut	8
beside be the				8
beside be up	19
beside bead	-5	9
beside bead b other	-5	9
beside bed	7	-8	-9	5
beside bend	26
beside bend b nobody	15
beside blow	18
beside blow Q		-9		9
beside blow p other	8
beside blow p person	10	-17	-11
beside bolt	-18	-10		29
beside bolt pp other	-19	-11		27
beside borrow	18
beside box b nobody	14
beside box b other			8
beside box in	-14	-15	21	-9
beside box of	-16	24		-4
beside box s other	-14	22		-5
beside break	-4	18
beside break in	17
beside break p other		11
beside break the	14
beside bring		20
beside bring Q	-11	27
beside bring b nobody		21
beside bring b other		11
beside bring b person		6		-9
beside bring back	-20			-7		16
beside bring i other	11		-8	-8
beside bring me	-34	42
beside bring pp person	-39	-28	-20	-23		44
beside bring the		-12				11
beside bubble	9
beside bubble b other	13
beside build		-6		10
beside burn				36
beside burn Q	-24	-6		31
beside burn b other	20
beside burn pp person	-26			43
beside burn through	-12			27
beside bury	7
beside button	-9	-10	-8	19
beside button pp other	-9	-10	-8	19
beside button up	-9	-10	-8	19
beside buy					8
beside buy G	16	-8
beside buy Q		15
beside buy a	-15	-7		-14		16
beside buy b nobody		22
beside buy b other		16
beside buy b person	-4		-5		27
beside buy i person	-17	28
beside buy pp nobody	-10	-50	-24	-25	65
beside buy pp other	-27	-26	-21	-26	-21	38
beside buy pp person	-35	-40		-11	48
beside call	23
beside call b other	23
beside call b person	4
beside call for	29
beside call him	23	-14		-6
beside call i person	13
beside call it		6		-13
beside call pp other	-9			16
beside call s other	27
beside can	6
beside can G	11
beside can will other		-12	-7	10
beside can will person	8
beside can't	9
beside can't will person	6
beside cap	-34	-13		40
beside carry	17
beside change				12
beside change Q		6	-8
beside change b nobody	6	9		-25
beside change b person	-17			31
beside change pp nobody	-20			29
beside change pp other				-12
beside change the		-15		23
beside check	16
beside check b other	11
beside check b person	7
beside check it	13
beside chip	13
beside chip on	6
beside chip pp other	15
beside choose	12
beside clean b person	10
beside clean it	-8			20
beside clean pp other	-26	-9		31
beside clean pp person	21			-5
beside clean the	8
beside clear the	15
beside clip	25			-13
beside close	17
beside close b person	31
beside close pp other	-5			13
beside come Q		-14	10
beside come T	-14	-26	-19	-20	40
beside come back		6
beside come bp nobody	-6				18
beside come bp other	10
beside come bp person	14
beside come down	5		-16	6
beside come for	-13		21	-17
beside come from	14
beside come i other	10
beside come i person	15
beside come in			11	-8
beside come out					10
beside come p nobody	5	-26	-14	-17	14
beside come p other	-5		14
beside come s other	-4	-20	-16	-20	39
beside come s person	11
beside come the	-13				19
beside come to	-31	-11	-17	34
beside come up	41	-15
beside come with	17
beside complete	18
beside complete b other	18
beside cope	22	-9
beside count	-13		18	-23
beside count Q	-23	9	22	-25
beside count b person		12	-24
beside cover	24	-7
beside cover Q		-23	15
beside cover s other	5	-25	14	-8
beside crack	15
beside crack b other	11
beside crack pp other	9
beside crush	17
beside crush pp other	17
beside cut a	-4			18
beside cut bpp person	6
beside cut in	-5			15
beside cut it				12
beside cut that	15
beside cut the	30
beside didn't	11
beside dig	27
beside dig Q	13
beside dig pp other	21
beside ding	23
beside ding pp person	13
beside ding the	13
beside do G	21
beside do Q		-22	-14	18
beside do a		9
beside do all	18
beside do b nobody	-9	18
beside do b other					13
beside do i other	16
beside do it	-20	17		5
beside do not	8
beside do p nobody				11
beside do p other	16
beside do p person	14	-4
beside do s other	5
beside do the					8
beside don't	17
beside don't will nobody	11
beside don't will other	8
beside don't will person	6
beside doubl	24			-17
beside doubl pp other	24			-17
beside drill	16
beside drill Q	17			-7
beside drip	14
beside drip on	13
beside drive	-9			14
beside drive Q	-5			22
beside drive p person	-5			22
beside drop Q	-6		17
beside dry	10
beside dry b other	8
beside dump	7
beside dump i other				12
beside dump right	5
beside ease	16
beside eat		-8		31
beside eat Q	-41	-20	-13	47
beside eat i other	18
beside eat my	15
beside eat p other	-9	-14	-9	34
beside eat p person	18
beside empty	14
beside feel	13
beside feel b person	14
beside feel it	11
beside figure		20	-4	-15
beside figure Q	-8	34	-7	-18
beside figure b nobody	-28	37
beside figure i person	-9	17		-9
beside file	12
beside fill				21
beside fill b person				11
beside fill it	-15			24
beside fill pp nobody	-30			35
beside fill pp other		-6		15
beside fill pp person	16
beside fill the	20			-8
beside fill with	-14	-10		31
beside find	6
beside find a	18
beside find b other	16
beside find b person	18
beside find pp nobody	12
beside find pp person	11
beside finish b nobody		-12	-19	19
beside finish b other				8
beside finish b person	4
beside finish i person	10
beside finish pp person	27			-12
beside finish the	14
beside finish to	20
beside fish	20
beside fit				5
beside fit Q	11	-11
beside flash	22			-5
beside flip			13
beside float		-19	-10	22
beside flush	30			-7
beside foam	-8	-11		20
beside forget		8
beside forget b person	15
beside frame	14
beside frame pp other	12
beside fre	23
beside fre it	15
beside fre pp nobody	20
beside get Q			16
beside get about		-8	10	-4
beside get an	-32	20	-5	15
beside get another	17		-14	-7
beside get b nobody		34
beside get b other		26	-12	-24
beside get b person	7
beside get i other	-5	15	-5	-7
beside get i person	4	6	-17
beside get it	31	-19
beside get its				19
beside get maybe	-13		16
beside get me		11
beside get no	-22	24			4
beside get p nobody	-16	-41	35	-19	9
beside get p person			34
beside get plenty			5
beside get s other		9
beside get s person	-5	16
beside get that	19	-13	-7
beside get the	6
beside get their			13
beside get to	8
beside give			-6		5	6
beside give b person	-23	-26	-24	12		23
beside give me				-8	15
beside give p person	5	-13			17
beside glue				15
beside glue pp nobody	4
beside glue pp other				8
beside glue pp person	-7			16
beside go Q		-30	-15	19
beside go and			17
beside go b nobody		15
beside go b other	14
beside go down	19
beside go i other	20
beside go in		6
beside go off	25			-16
beside go on		12
beside go over	27
beside go p nobody				28
beside go p other				16
beside go p person				14
beside go s other		17
beside go through	-14			49
beside go up				12
beside gotta	8
beside gotta pull	7
beside gotta will nobody	20
beside grab Q	-13	9		-14	22
beside grab a		13
beside grab b nobody	6
beside grab b person		18
beside grab me	7
beside grind pp other	-9			16
beside guess		9
beside hang G	25			-10
beside hang Q	-22			36
beside hang b nobody	-12		21	-17
beside hang b other		5		-18
beside hang by	31
beside hang on	-6	7
beside hang pp nobody	-15			24
beside hang pp person				18
beside hang s other	21			-14
beside has Q	14		-6	-12
beside has a	-6					9
beside has has person		-15	13
beside has its	24			-8
beside has no	20
beside has the	16
beside have Q			30
beside have b nobody			46
beside have b person			54
beside have i person	-4	-9	23	-20
beside have in	19		-5
beside have let go	22		-14	-8
beside have no	11
beside have only	7	-8		-7
beside have pp nobody	26		-10
beside have pp other	8
beside have pp person	6		-13	15
beside have still	-34	-8	39	-8
beside have the	16
beside have to	37
beside hit bpp person				10
beside hold Q	22
beside hold pp person	5
beside hold s other						14
beside hook	13
beside hook up	9	-4
beside hum	9
beside i'll	16
beside i'll G	16
beside i'll will nobody	19
beside i've	18	-4		-6
beside i've has nobody	18	-9		-11
beside install	-6			16
beside insulate	21
beside is G	15
beside is Q	8
beside is a		-11
beside is all	23
beside is already	17
beside is at	7
beside is black	13
beside is down	-11	-14	-12	20
beside is flat	10
beside is for		10
beside is full	10
beside is in		-20	7
beside is is nobody	5
beside is loose	11
beside is no	9
beside is on	16
beside is only	12
beside is the	11
beside is up		-4		13
beside keep	6
beside keep b nobody			12
beside kill	18
beside kill the	7
beside knock	24
beside knock pp person	17
beside know			6
beside know b other	-8		17
beside land	10
beside lay b person	23			-13
beside lay down	-5			12
beside lay i other	25			-4
beside lay in		9		-31
beside lay pp other	15
beside lay pp person	-6			18
beside lay the	30
beside leak	7
beside leak b other	8
beside leak from	11
beside leak i other	7
beside leave G	31
beside leave Q	-6	-23	41	-24
beside leave a	14
beside leave b nobody	14
beside leave b other	18		-8
beside leave b person	6
beside leave corner	5
beside leave i nobody	-5	16
beside leave in	8
beside leave it		7
beside leave me	-20		27	-24
beside leave of	-4		13
beside leave on	16
beside leave over	24		-12
beside leave pp nobody			7
beside leave s other	-4		12
beside leave side	7
beside leave that	6
beside leave the	18
beside let	5
beside let bpp other	14
beside let the	6
beside level b nobody	22
beside lift	11
beside like G	10
beside like Q		4
beside like a	12
beside like b person	11
beside like the	6
beside look	10
beside lose	5
beside lose b person	6
beside lose pp other	25
beside lower	15
beside lower b other	15
beside lower than	12
beside make Q	32	-17		-11
beside make a	10
beside make b nobody	-4	5	5
beside make b other	11
beside make b person	-5	18
beside make it	-21	25
beside make pp person	31	-6		-17
beside make the	5
beside mark	13			-4
beside match	16
beside match b other	9
beside measure	6
beside measure Q	18
beside measure b nobody		10
beside measure bp nobody	-6				18
beside measure bp other	10
beside measure bp person	14
beside measure bpp other	13
beside measure bpp person				10
beside measure i other	18
beside measure i person	17
beside measure p nobody	5	-26	-14	-17	14
beside measure p other	-5		14
beside measure pp nobody	12
beside measure s nobody	17
beside measure s other					9
beside measure s person	9
beside meet	22
beside meet the	9
beside miss		17
beside miss Q		22		-16
beside miss a	35	-17
beside miss at	13
beside miss b person	-10	17
beside miss from	-21	26		-5
beside miss i person	-8	17
beside miss the	28
beside mix				12
beside mix Q		-14	-12	22
beside mount	-9		-5	21
beside mount pp other	23			-4
beside move			7
beside move Q	22	-9
beside move b other	30
beside move i other	19
beside move i person	-19	-12	28
beside move p nobody				28
beside move p other				16
beside move p person				14
beside move pp other			4
beside move pp person	5
beside move s other		9
beside move the			10
beside nail	-6			19
beside nail pp nobody				9
beside need		18
beside need Q		14
beside need a		13
beside need an	8
beside need another	-31	34
beside need b nobody		31
beside need b other		8
beside need b person		18
beside need i person		25	-8	-26
beside need more		11
beside need pp other		-6	12	-7
beside need pp person	34	-7
beside need qt	-26	30
beside need s other	6
beside need s person		4
beside need the		-9	24	-6
beside need to	25	-7
beside nick	26
beside nick pp other	22
beside nick pp person	11
beside nick the	9
beside notch	18
beside oil	22
beside open		-6	7
beside open Q	-5	-18	-21	19
beside open b other			16
beside open b person		-11	9
beside open pp other	17
beside open pp person		-9	-15	7
beside open the	16
beside order	-6	21
beside order G		-17			24
beside order N		8
beside order Q		19
beside order a	11	-11			4
beside order b nobody		15
beside order b other		10
beside order b person					8
beside order i person	-24	32		-6
beside order pp nobody	-8	-27	-5	-14	34
beside order pp person		-16			25
beside order the	-13	16			12
beside other b nobody		33
beside other i nobody	-28	41	-8	-13
beside other p nobody	-10	-34	14
beside other p person			14
beside other pp nobody	-19	-33		-37	45	9
beside other pp other	13
beside other pp person		-15				23
beside other s nobody	24			-5
beside other s other	18
beside owe	-15	24	-7	-15	8
beside owe b person				-5	14
beside owe the	19
beside own	19			-4
beside pack	-11			22
beside pack b nobody	-9	17		-11
beside pack it	-5	19		-28
beside pack pp other	-6	-11	-6	18
beside pack the	9	-5
beside pack with	4
beside paint pp person	12
beside paint the	-5			12
beside pass pp person	11
beside pass the				7
beside patch b nobody	-10	17
beside patch pp nobody	22			-12
beside pay	26	-5		-10
beside peel	18
beside pick					22
beside pick G	8
beside pick b nobody		32
beside pick b person	-6	14	-6	-10
beside pick me	-20	32
beside pick pp nobody	-27	-27	-7	-5	49
beside pick pp person	-6	-18		-6	28
beside pick up	-19			-12	36
beside pin	-15	-16	6	12
beside place	-5			14
beside place b nobody	-15	-10		20
beside plane	14
beside plane b nobody	16
beside plane the	9
beside plug				8
beside plug pp person				7
beside plumb	22			-13
beside point	20
beside point Q	22
beside point b other	17
beside pop	24
beside pop the	8
beside pour				8
beside pour Q		-7	-9	24
beside pour pp other	16		-5
beside prime	7
beside prime b person	17
beside prime pp nobody	-11			16
beside prime pp other	16	-4		-15
beside prime the	-10			15
beside pull	13
beside pull Q	-5			15
beside pull out	12
beside pull pp nobody	30
beside pull pp person				8
beside pull the	5
beside push	7
beside push a	7
beside push b person	5
beside put				20
beside put G	-29	16		9
beside put Q				16
beside put a				6
beside put bpp nobody	-6			21
beside put bpp person				16
beside put down	-14			21
beside put i person		17		-25
beside put in	-18			30
beside put it	-32			31
beside put new	-10	-24		25
beside put on	-30	-13		34
beside put that	16
beside put the	16
beside put with	16
beside quit	11
beside quit bpp other	9
beside quote	19
beside raise	15
beside raise b nobody	15
beside rate	6
beside rate Q	6
beside rate pp other		5
beside read	21
beside read Q	21
beside read bpp other	23
beside read i other	9
beside rebuild	-22	-14		32
beside redo	-7		-7	18
beside redo b nobody	16
beside rehang	-5			16
beside relay				12
beside relay Q	-17			20
beside relay pp other	31			-20
beside replace	-10			19
beside replace Q	-5	13	-15
beside replace pp nobody	-27			35
beside replace pp other	-7	15	-8
beside replace pp person	11	-4
beside replace the				6
beside require	-15	13	12	-31
beside reset		-8		10
beside reset bpp nobody		-13		18
beside reset it		-16		22
beside return	-13			-22		22
beside return Q	8	-17	-20	-15		15
beside return b nobody		22	-25	-21		-28
beside return b other	40	-11	-7	-6
beside return pp nobody	-53	-27	-30		-9	49
beside rip b other	29	-12
beside rip b person	-8		14
beside rip pp other	10
beside rip pp person	-5			12
beside rod	27			-16
beside rod pp nobody	18			-8
beside roll	19
beside roll b other	8
beside roll b person	14
beside roll pp other	8
beside roll the	6
beside rot	11
beside rot pp other	10
beside rub	11
beside run G	10
beside run Q	-5			32
beside run a	5			-4
beside run bp nobody		13
beside run bp person	-11	15	-9
beside run i other	16
beside run out	42
beside run p nobody		-14		6
beside run p other	36			-17
beside run p person				18
beside run s person	12
beside run the	20
beside run water	21			-7
beside rust	7
beside rust b other	8
beside sag	9
beside save			10
beside say Q	24
beside say b nobody		6
beside say pp other	8
beside say pp person	32
beside say s person	-6	22
beside scrape	18
beside scrape pp person	6
beside scratch			5
beside scratch b other	-9		17
beside scratch the			15
beside screw	-5			21
beside screw Q		-19	-7	8
beside screw pp nobody	-19			23
beside screw pp other	22
beside screw to	21
beside scribe		12
beside scribe a	26	-8
beside scribe b other	-16	21
beside scribe b person	27	-7
beside scribe the	10
beside seal pp nobody	16
beside seal pp other	-10			18
beside seal pp person	-6			12
beside seal the	19
beside see b nobody	9
beside see b other				16
beside see b person	11
beside see it	9
beside see pp person	11
beside see s other	24
beside send	-26					27
beside send Q	-39	11		-15		21
beside send a		7
beside send b other	20	-9
beside send i other	-21	29
beside send pp other	-17	-11	10			17
beside send pp person		-11	9			11
beside send the	25
beside set Q		-11	-17	12
beside set a		-8		5
beside set bpp nobody	25			-5
beside set bpp person				9
beside set in	22			-10
beside set it		-7		18
beside set the	12
beside shave	12
beside shave the	12
beside shim	23			-5
beside shim pp person	19			-11
beside shim the	20			-11
beside ship	11	-7	7	-18
beside show	16
beside shut	20
beside shut the	10
beside sign	-11		20
beside sign pp person	17
beside sister Q	26			-29
beside sister a	-24			29
beside sister b nobody				-6
beside sister pp nobody				5
beside sister pp person		-9		4
beside sit Q	17
beside sit b other		6
beside sit flat	-19	24		-4
beside sit i other	20
beside sit i person	5
beside sit in	16
beside sit on	24
beside sit pp other			9
beside sit s other	5
beside size	18
beside size b nobody	20	-8
beside skim	12
beside skim pp nobody	12
beside slide	7
beside slide b person	7
beside snake	23
beside snap	19
beside snug	29			-19
beside snug pp person	8
beside sound	20
beside spend	-25	-18	-23	33
beside split	6
beside split bpp other	21
beside split bpp person				10
beside split the	16
beside spray	20
beside spray both	21			-5
beside spray pp other	22
beside stack	-10			20
beside stain	4	7		-18
beside stand Q		11
beside stand s other	15
beside start	20
beside start at	4
beside start b nobody	5
beside start b person	18
beside stay		-15	25
beside stay b nobody		-20	20	-9
beside stay b other	-12		17	-5
beside stick a	-11			10
beside stick b nobody	37	-12		-14
beside stick out	8
beside stick pp other	14
beside stick pp person				7
beside stick s other	10
beside stop	-13	25
beside stop b other	-29	32
beside straighten	17
beside strip b other	-6	4	6
beside strip of	-5	14
beside strip pp other	10
beside stuff	-17	16
beside stuff b nobody	-7	9
beside stuff the		-10		6
beside supply		8		-10
beside supply b other	-10	17
beside swap	-5			23
beside swap b nobody		18		-28
beside swap b other	22
beside swap for	-20	21
beside swap pp nobody	-21			34
beside swap pp other	-20	-19		28
beside swap pp person	-7	-11		22
beside swap that	26			-14
beside swing	-6	22		-8
beside swing b person	-17	27		-11
beside swing by	-17	27		-13
beside tack	14
beside take						6
beside take Q	-5			26
beside take a	43	-12		-5
beside take b nobody	10	-27	12
beside take b other	-9	14	5	-10
beside take b person	-9
beside take back	-30	-19	44	-6
beside take me	14	-13	-17	6
beside take out	38	-8		-25
beside take p nobody	-24		-27			34
beside take p other		-6	-10	17
beside take p person	-13			-14		35
beside take s other	15		-9
beside take that	-26		8			22
beside take the	-4			-20		36
beside talk to	5
beside tape	12
beside tape it	8
beside tape pp nobody	7
beside tape pp other	10
beside tape pp person	5
beside tear	8
beside tear p other	9
beside tell b nobody		12
beside tell pp person	13
beside test	17
beside test Q	5
beside test pp nobody	11
beside test with	10
beside text	7
beside think b person			9
beside think pp person	5
beside throw		6
beside throw a	-27	16		13
beside throw b nobody		23
beside throw p person	-21	-9		33
beside tie				6
beside tie pp other	13
beside tie pp person	-8	-7		15
beside tighten	29			-16
beside tighten the	22			-12
beside tile	19
beside top G	27	-6		-20
beside top b nobody	19
beside touch	11
beside touch i other	9
beside trip	23	-14
beside try			6
beside try b nobody	-16		18
beside try pp person	27		-7	-5
beside turn Q	-5	-22	-4	17
beside turn b nobody	17
beside turn b other	-9	-16		19
beside turn out	16
beside turn s other	13
beside undefined has nobody		-15	12	-10
beside undefined has person		-18	12
beside undefined is nobody	5
beside undefined is person	11
beside undefined will person	14
beside use				23
beside use G	26			-13
beside use Q				18
beside use a	-26			36
beside use about			-8	21
beside use b nobody	-32	-8		43
beside use b other	20
beside use b person	-9
beside use pp nobody				24
beside use pp other				36
beside use pp person				25
beside use the	22			-7
beside use up	-35			43
beside wait b other	11
beside wait b person	20
beside wait i other	-26	31
beside wait on	-20	32
beside walk					14
beside want G	32	-20
beside want Q		9
beside want another	20	-12
beside want b nobody	6			-13
beside want b other	28	-8
beside want b person		27
beside want it	19	-11
beside want pp person	34	-7
beside want s nobody	5
beside want s person	12
beside want the	32	-14
beside want water	20	-4
beside wash	19
beside wash the	15
beside weep	7
beside weep i other	5
beside were	26			-8
beside were is other	27			-11
beside will glue	-5	11
beside wipe	18
beside wipe the	15
beside wire	18
beside wire pp other	17
beside won't	10
beside won't will other	6
beside wont	20
beside work	34
beside work bp nobody		13
beside work bp person	-11	15	-9
beside work bpp nobody				13
beside work bpp person				4
beside work i nobody	20
beside work i other	31
beside work i person				-7
beside work p nobody	5	-11		4
beside work p other	11
beside work p person				15
beside work pp nobody				27
beside work s nobody	26			-9
beside work s other	5
beside work s person	25
beside wouldn't	7
beside wouldn't will other	8
beside wrap b other		5
beside wrap pp other			16	-8
beside wrap with			15	-13
bound about			8
bound atLeast		5
bound atMost	5
bound over	35
bound under	22	-5
code	-42	9		27
count after bought here			-5	-6	6
count after bought sentence	-48	-13	9		32
count after have far		22		-25
count after have here	-11		21	-35
count after have sentence	-11	19	7	-11
count after need far				-6
count after need here		25		-8
count after need sentence	-6	36		-11
count after returned far	-37	16	15
count after returned sentence	-43		-24	-32	29	21
count after used far		21
count after used here		-10		9
count after used sentence	-9		7
count beside are	-28			41
count beside be	25
count beside blow	32			-16
count beside box	-10	-16	20	-13
count beside break	-17	20	-5
count beside bring	-12	11
count beside buy		12
count beside buy b nobody		6
count beside buy b person					6
count beside buy pp nobody		-24	-4		31
count beside buy pp person	-35	-28	-17	-13	38
count beside call	46	-12
count beside change	-20	-22		34
count beside come	-21	-23	11		14
count beside count		-31	10	-14
count beside cut	-13		14
count beside do	15			-12
count beside drill	18			-10
count beside drip	23			-13
count beside drive	-28	-5		33
count beside eat	-19	-14	-13	29
count beside finish	7	-5
count beside give	-25		-23	-29	18	19
count beside glue	-10	-6		19
count beside go	-6			13
count beside grab	11	-8		-5	9
count beside hang	-27			38
count beside has			-19
count beside have		-12	15
count beside have b nobody	-26	-16	41	-8
count beside have b other	21			-10
count beside have b person	-4		33	-6
count beside have pp other	38		-25	-27
count beside have pp person		-17	-9	21
count beside hit				9
count beside hold	-12					16
count beside leave	-23	-22	42	-37
count beside like		16		-12
count beside make	-7	16		-14
count beside measure	28	-12		-10
count beside measure bp other	33		-16	-11
count beside measure i other	14
count beside measure i person	7
count beside measure p other	-38	-13	27	7
count beside measure s other					13
count beside miss		26		-20
count beside mount	-21		-17	27
count beside move		-27	17	-23
count beside move b other	18			-19
count beside move p other	-9		-5	22
count beside move pp other	-29	12	28	-29
count beside move s other	-22	19	8
count beside nail		-5	-6	6
count beside need		24
count beside need b nobody		14
count beside need b other		20
count beside need b person	-5	41
count beside need s nobody	21	-9
count beside need s other	25	-17		-9
count beside need s person		6
count beside nothing	-10
count beside open	-6	-19	22	-31
count beside order	-10	18			8
count beside other b nobody	-4	46
count beside other b other		10		-14
count beside other b person		14
count beside other i other	16			-30
count beside other i person		17		-9
count beside other p nobody	-23	-33	30	-38		22
count beside other p person		-26
count beside other pp nobody	-46	-11		-29	31	23
count beside other pp other	22	-12		-11
count beside other pp person	-12	-27	-29	-11		28
count beside paint	23			-10
count beside patch	-7	19		-20
count beside pick	-13	9		-15	17
count beside point	23
count beside pull	37			-27
count beside put	-23	-13	-5	50
count beside read	21
count beside replace	-21	9	-12	18
count beside return	14	-16	-15	-5
count beside rip	-4			12
count beside roll	18
count beside run	-11			20
count beside sand				-11
count beside say			14
count beside say b nobody		8		-10
count beside say b other	30	-38	15
count beside say pp person	31	-6
count beside see	22			-8
count beside send	-53			-25	-9	39
count beside set	5		-9
count beside sister	22	12		-38
count beside stick	-18			12
count beside swap	-11	6		8
count beside take		-26				22
count beside throw	-27	18	-14	7
count beside top	12			-5
count beside turn	27			-11
count beside undefined has other			-38
count beside undefined is other				14
count beside undefined is person	29
count beside use				15
count beside use b person	-13	13
count beside use pp nobody				12
count beside use pp person	-7			23
count beside want	14
count beside were	22			-11
count beside work b nobody	-6	14
count beside work b other		14	5	-22
count beside work b person	-14			13
count beside work bpp nobody	-13		-12	35
count beside work bpp person	-16	-9		24
count beside work i other	14		-9
count beside work p nobody		-12		13
count beside work p other		-15	-13	10
count beside work pp nobody	-7			40
count beside work pp person		-15		12
count beside work s other	26			-11
count buy imperative behind		10
count buy modal behind		11
count buy past before	-33	-21	-16	10	21
count buy past behind	-13	-39	-15	-12	48
count buy present behind	-33	23	-4	-15	14
count cue ate		-19				24
count cue back	-15			-14		58
count cue bought	-31			-30	36
count cue came	-26	-4	11			21
count cue have	-23		87
count cue lacks	-27	15		14
count cue need		47
count cue used	-7			52
count flawed	29
count have present before	21		-6	-15
count have present behind			25
count kept	-12		51
count left #	-27			16
count left (	-21		-10	20		9
count left +	-16	15		7
count left -				-7
count left N	30	-18		-12
count left Q	4		5	-6
count left T	5		5
count left about			12
count left add		5
count left all		-16		29
count left and	-15	14
count left are	32			-18
count left at	68
count left back	-23	-26		-6		27
count left be	39
count left between	27	-15
count left bring		14
count left buy	-30	25			16
count left by	10	9		-34
count left change		-13		20
count left cut		6		-8
count left do	21			-11
count left down	-24		-8	32
count left drill	19			-12
count left drive	-10	-9		26
count left exam	26
count left for	11	6		-30
count left from	14			-8
count left get	-9		6
count left go		-22	-4	11
count left grab	-14	7			18
count left hang	-27	-11		35
count left has		9		-14
count left have		-8	11
count left i'm			-6	-15
count left in		-40	-18	29
count left is	10		6
count left it	18			-20
count left it's			12	-35
count left last	13	-13	-9
count left like	-8	22		-7
count left maybe	-10	-23	36	-26
count left me	-32	21	7	-11	7
count left miss		16		-13
count left need		19
count left now		-18		6
count left of	50		-23	-40
count left on	-6	-5	-12	37
count left only		-31	26	-19
count left order	-19	33
count left other				-11
count left out	-6	-6		19
count left over	28			-10
count left paint	20			-8
count left past	21
count left point	23
count left pull	9	-28	-18	-38		21
count left put		-5		19
count left read	20
count left replace	-5	13	-15
count left return	11	-14	-16	-4
count left run	12	-8
count left sand	-15	11	14	-8
count left say	30
count left set		-8	-19	16
count left short	-35	26	7	-18
count left take	-30	-18	-35	32		11
count left that's	-27	16	-5	11
count left then	30			-12
count left there's	-27	-44	50
count left those	8	-15	9
count left through	4
count left throw	-27	18	-14	7
count left to	7	-17	16	-9
count left under	20
count left up	-24		-7	7	15
count left use				28
count left want		6
count left we're	11		-12	-12
count left with	-43			40
count list have	-47	-43	49	-35
count list need	-29	41	-21	-46		9
count measure owed behind	-7		10
count measure past behind	5	-12	-6	-13	12
count measure present before	19		-9	-29
count measure present behind					8
count more	-20	33		-18
count move imperative behind	25	-8		-11
count move past before	-9		53	-10
count move past behind	-16		15
count move present behind		16	-19	-33
count name flawed	-11
count named before area	12	-11
count named before surface	31			-5
count named before tool	21
count named before word	16			-14
count named before work	-15		14	10
count named here area	-12	14	-5
count named here defect	7	-11	9	-8
count named here finish	-11	11	-7	-24		19
count named here material	-61	4		37
count named here part	-86	21		22
count named here surface	52
count named here tool	-47	25	-29	21	7
count named here word	-28			8
count nameless	38			-13
count need modal behind	-19	26
count need owed before	6		-5	-20
count need owed behind		13
count need past before	-29		8
count need past behind	18
count need present behind	-9	19		-22
count not ahead		13	-14	-9
count null copula before		15	-7
count null modal behind		11	-16
count null none no	-10
count null owed behind	10
count other copula before	-5
count other imperative behind	-20	63
count other modal before			-14	7
count other modal behind	12			-10
count other owed behind	-22	6	24	-27
count other past before						10
count other past behind	-6	-11				12
count other present before	24		-5	-6
count other present behind	-9	16				4
count pointing	-24			29
count right (	-15		4	-18	17
count right +				10
count right /	-51	26	-28	24
count right @	-27	22	-22	7
count right Q	-8	8
count right a	6	5	-6		-19
count right above	26
count right across	13
count right after	26			-15
count right all	-34		20	4
count right already	9	-21	11	-30
count right are	-15		8	16
count right at				-4
count right be	18	-28
count right bend	28			-20
count right break	9			-8
count right by	5	17		-32
count right can	-46	17	25	-15
count right come	5	-31		-50		27
count right crack	26	-12	-16
count right do	29			-19
count right down		-10	-17	24
count right each		-12		8
count right for	-32	36
count right from	-11	-16		8
count right go		-14	-6	6
count right hang	-24	-11		31
count right has	44			-17
count right i	-11	-31			17
count right in		-42	18	14
count right is	9	-30
count right it	-27	-10	23	6
count right just	30			-20
count right leave	-14		53	-11
count right miss	19		-28	-39
count right more		11
count right need		7	-6	-16
count right no	-40	48	-16
count right now		-30	-22	22
count right of	-41	43
count right off	37
count right on		-5		16
count right out	-31	-30	-31	49
count right over		-20	16	-32		12
count right pull	16		-17
count right run		15		-35
count right short		16	-29	-18
count right spare	-32	-17	36	-24
count right still			22	-29
count right the	-12	23
count right then	18			-7
count right through		-12		12
count right to				-11		15
count right up	-22		-24	43
count right use	-9			21
count right were			-10	-12		30
count right when	8	-12	5
count right where	-17	-14	26	-11
count right which	32			-8
count right with	33			-8
count say imperative behind	-17			8
count say modal behind	24	-17
count say past behind		7
count say present behind	-12	8	13
count says imperative behind		35
count says imperative behind not	-6	22		-17
count says modal before			-19	6
count says modal before not	-18	7	7
count says modal behind		22
count says modal behind not	22		-14
count says none no	-10
count says none no not		22	-5	-27
count says owed before	-33	26		-39	19
count says owed behind		13
count says owed behind not	32	-15		-6
count says past before				9
count says past before not	-18	-10	6	16
count says past behind				14
count says past behind not	23		-43
count says present before		5
count says present behind	-13		6
count says present behind not	-8	17	-7
count sized	-60	34
count sold so false	13		-27
count sold so true	-8	6
count then buy b	-24	32	-11	-20
count then buy pp	-33	-21	-16	10	21
count then have b	-5		8	-17		6
count then have pp			-10	-4
count then measure b	-24	-17	-27	34
count then measure bp	26			-9
count then measure i	-25		8	13
count then measure p	-20	-38				34
count then move b	8	-13	5
count then move p		-26	-23	17
count then move pp	-14		56	-10
count then move s	-15					8
count then need b	11			-16
count then need pp	-40	19	21	-19
count then other b		19	-30	-33
count then other i	22		-22	-44
count then other p						12
count then other pp		-29		-11		6
count then other s	10	-14		-12
count then undefined has	40			-23
count then undefined will	-14	15
count then use pp	-17			28
count then work bpp	5	-20		6
count then work i			14	-12
count then work pp		-7		11
count then work s	-25	10	-27	27
count use past before	-17			28
count use past behind				11
count use present behind	-35	-13		34
count verb balance behind	-22		20
count verb be before	-4
count verb break behind	-20	16
count verb bring behind	-17	13
count verb buy behind		21
count verb call behind		5
count verb change behind	-48	-19		46
count verb come behind		-21	-16	-21	26
count verb count behind	15	-39	7	-15
count verb crack before	22	-7
count verb cut behind			15	-12
count verb do behind	31	-20		-12
count verb drill behind	5
count verb drive behind	-16			29
count verb find behind	-13	10		8
count verb finish behind	30	-18		-6
count verb get before	-29	22	-45	21
count verb get behind	-6	10
count verb give behind	-24		-20	-26	18	18
count verb glue behind	-9	-13		23
count verb go behind			-6
count verb grab behind	12	-8			8
count verb hang before	-37			34
count verb hang behind	-28			40
count verb have before	16			-14
count verb have behind			20
count verb i'll behind		23		-25
count verb leave before	-26		53
count verb leave behind		-5	23	-27
count verb make behind	-19	4	11	5
count verb measure behind	25			-10
count verb miss behind	-35	36
count verb move behind			12	-23
count verb must behind	13
count verb nail behind		-5	-6	6
count verb need before		11	-6	-16
count verb need behind		35
count verb null before		15	-7
count verb null no	-10
count verb order behind	-7	15			7
count verb paint behind	22			-8
count verb patch behind	-7	19		-20
count verb pick behind	-10	15		-15	12
count verb prime behind	38		-4	-27
count verb pull behind	39			-29
count verb put behind			-24	24
count verb rate behind	23			-5
count verb read behind	10
count verb rehang behind	-18			24
count verb replace behind	-8	-23	-7	21
count verb run behind	-19	8		21
count verb sand behind	8
count verb screw behind		-12	-8	11
count verb see behind		10	-8	-7
count verb send behind	-17		-42	-27	-6	38
count verb set behind				7
count verb should behind	-15	-13		22
count verb sister behind	9	7		-11
count verb strap behind	-29		9	17
count verb strip before	7
count verb swap behind			-15
count verb take behind	-20	-25				28
count verb think behind	-18		16
count verb throw behind	-27	18	-14	7
count verb tighten behind	6
count verb use before	-33			41
count verb use behind				10
count verb want before	-15	-13	12	6
count whole clause	-24	6		30
count work modal before	-26	21	18	-24
count work modal behind				-7
count work owed behind	17			-28
count work past before		-16		33
count work past behind				39
count work present before	-40	5	5	24
count work present behind	-11	-15	9	18
counter landscape	11
cue bought	-14				57
cue came			5
cue need		25
first N	-8	30		-15
first air	11
first almond	16
first an	-24	45
first anchor	18		-8	-7
first another		6		-13
first any	37
first anything		-8		15
first apt	20
first backsplash	14
first bath	18
first bay	6
first bedroom	17
first birch	-13		19
first black	33
first block	33
first bone	18
first both				5
first bottom	21
first bowl	17
first bracket	-5	16
first brass	39	-7
first brown	28	-13
first bye	25
first cab	13
first cap	26
first catch	18
first caulk	40	-5
first ceiling	12
first circuit	15
first clear	27
first clearance	11
first clip	16			-9
first coat	26
first code				6
first coffee	27	-5
first corner	25
first counter	32
first crown	19
first cust	30	-19
first daylight	9
first drain	17
first draw	16
first drill	25
first drop	16
first drywall	39
first due	15
first dumpster	25			-10
first edge	10
first eggshell	-34	5	10			24
first electrical	-5				17
first epoxy		-19		18
first exhaust	14
first fall	9
first fence	13
first final	9
first first	20
first first coat	8
first flash	-10		20	-16
first floor	11
first foam	11
first form	20
first frame	-14	12
first front	26
first gap	8
first gas	17
first glue	31
first gray	-15	15		6
first green	16
first grout	32
first happy	12
first hearth	31
first heat	14
first hello	20
first her	34
first hinge	21			-8
first his	31
first hole	6
first hook	6
first hot	33			-13
first house	24
first hvac	10
first island	12
first jan	17
first ladder	23
first lag				13
first land	9
first latch	26
first left hand	22
first legs	15
first lh	28	-4
first lift	23
first line	18
first list	15
first lock	24
first lol	20
first long	15
first luis	28
first main	15
first maple	24
first morning	12
first mortar	27
first mud		9		-11
first my	37
first nah	24
first neutral	13
first new	-45			53
first niche	25
first nickel	12
first no	25
first oak				14
first old	38
first open	20
first orange	20
first our	-12		20
first pack					5
first paint	43
first permit	17
first pete	13
first pipe	-9	16
first plaster	26
first plate	-29	16		23
first plenty			9
first plug	6
first pump	26
first punch	9
first putty				13
first quiet	33			-6
first rear	26
first red	27
first replacement		14
first reveal	12
first rh	19	-7
first rick	14
first rigid	-8			19
first ring	29
first rise	12
first ro	18
first rod	28	-17		-10
first rudy	8
first sand	33
first saw	16
first screed	15
first screen		13
first seam	19
first seat	-26			31
first second	30
first second coat	15
first shim		19
first shingle	15
first sign	6
first silicone	-5			19
first silver	19
first sir	13
first skirt	36
first slab	12
first slope	9
first small	-31	35
first soft close	26	-11
first some	-11	19
first sorry	17
first splice	17
first stain	5
first stainless	36	-15
first stair	12
first stairs	18
first staple		-6	9
first static	14
first step	12
first strap				11
first strike	35
first svc	5
first tank	16
first tap	11
first temp				10
first the	9
first their	30
first third	13
first this	4
first those	25
first tile	21
first trim	27
first truck	10
first upper	20
first vent	-8	20
first wall	24
first walls	11
first walnut	27
first waste	-11			18
first water	8
first waterproof	21
first wax	-30		21	5
first weatherstrip	28	-10
first white	24
first whoever	27	-8
first wire	32	-6
first wrong	23
first yellow	6
first zone	26
gap  have	27	-12		-16
gap  have copula	25	-10		-16
gap  have past	50		-39
gap  need	37	-4
gap  need imperative	49	-45
gap  need modal	9			-10
gap  need none		13	-11	-10
gap  need owed	9
gap  need present	31	-10
gap  none imperative	-24	18		11
gap  none none	-21	17	11	-9
gap  none owed	-10	14
gap  none past	6
gap  none present	17			-7
gap  used	28			-10
gap  used none	26	-8	6	-32
gap  used past	23		17	-47
gap & need	-14	19		-7
gap ( need	30	-26	-5
gap + need	-25	46
gap + need imperative	-4	15		-7
gap + need owed		21
gap + none	28	-6		-10
gap + used	-32	-26	-15	47
gap + used none	-44	-20	-19	50
gap , and need	-17	37	-14	-25
gap , and need none	-17	37	-14	-25
gap , bought	-19	-35		-40	44
gap , bought none	-22	-36		-41	44
gap , have		-35	43	-46
gap , have none		-35	45	-47	-6
gap , need		44		-5
gap , need have	-11	14
gap , need have owed	-11	14
gap , need none		41
gap , none copula				8
gap , none none	6
gap , none past				16
gap , so none	4
gap , used	-17	-35		44
gap , used none	-6	-45		47
gap , used past			4		6
gap . have		5
gap . have copula	30			-7
gap . have none	5
gap . need copula	37
gap . need none owed	-9	24
gap . need past	-10	-9	15
gap . need present	15
gap . need used	-5	15
gap . need used owed	-5	15
gap . none copula	-11			5
gap . none none		-34
gap . none past	22
gap . none present	22
gap . used copula	-24	21
gap . used none	5	-15				10
gap . used past	31			-23
gap . used present	28	-9
gap : none		-20	-17	-19	24
gap ; have	31
gap ; have none	31
gap ; need	-13	23	-9	-22
gap about none	31	-7
gap above none	6
gap and bought	-46	-39	-26	-31	58
gap and have	-42	-47	65	-27
gap and have copula	-21	-32	36	-20
gap and have none	-31	-20	37	-20
gap and have past			9
gap and have present	-28	-12	35	-7
gap and need	-25	88
gap and need copula		19		-5
gap and need imperative	-13	28
gap and need modal	-26	57		-13
gap and need none	-40	65		-22
gap and need owed		16
gap and need past		10		-20
gap and need present	-18	41
gap and none	13
gap and none copula	51			-11
gap and none imperative	19
gap and none modal	-10	17		-5
gap and none none	-7	14	-7
gap and none owed	-31	24		5
gap and none past	40			-12
gap and none present	7			-11
gap and there's none	-14	11			17
gap and there's none copula	-14	11			17
gap and there's used			10
gap and there's used copula			10
gap and used	-29	-27		79
gap and used copula	-29	-7		42
gap and used none	-29	-27	-23	44
gap and used past	-12			45
gap and used present	14	-27	-18	14
gap at need	24	-12
gap before none	4
gap but none	18
gap by need	28	-10
gap by need owed	23	-17
gap by none copula	7
gap by none past	14
gap far bought copula	21
gap far bought imperative		16
gap far bought modal	13
gap far bought none		-17	16	-21	8
gap far bought past	-8
gap far bought present	21
gap far have imperative		25
gap far have modal	-8	27
gap far have none		13
gap far have owed		21
gap far have past	-7		8			4
gap far have present		-17	7
gap far need owed		8
gap far none imperative		10
gap far none modal		9
gap far returned	-10				10
gap far returned copula	17
gap far returned modal		9
gap far returned none		10		-8
gap far returned owed	-6	21
gap far returned past	-35	-20	7	-23	39
gap far returned present			9
gap far used copula	19
gap far used owed		11
gap fitted, used	-23		-12	20
gap for need	45	-16
gap for need none	13
gap for none	17
gap from none copula	9
gap from none none	4
gap from used	29	-9	-18	-21
gap has none	20
gap has none present	15
gap have none present	-4		11
gap hung, used	8	-5
gap i got none	-8	10	5	-23
gap i got none past	-8	10	5	-23
gap i put none				9
gap i put none past				9
gap in have	35
gap in have copula	12
gap in have none	13
gap in have past	15
gap in have present	25		-20
gap in need	35	-27
gap in none	18
gap in none copula	5
gap in none none	28			-12
gap in used	17
gap in used copula	13
gap in, used	24			-33
gap is none	16
gap it's none	-10	17		-6
gap it's none copula	-10	17		-6
gap left and have	25
gap left have	22		-16
gap left in have	22
gap left in have copula	19
gap left in have past	9
gap left on have	13
gap left, have	39	-29	-20	-23
gap left, have none	33	-21	-22	-24
gap left. have	15	-12	-9	10
gap left. have none		-18	-15	19
gap line need	-12	16	12	-28
gap line need none	-9	24		-33
gap line need past	-11		20
gap line none	42			-15
gap line none none	30	-13
gap line none past	26			-4
gap line used		16
gap line used none		14
gap near bought		-19
gap near bought copula	9
gap near bought none	20
gap near bought past			-6	13	-10
gap near have		18
gap near have copula		22
gap near have imperative		12
gap near have modal		12
gap near have none	-6	7
gap near have owed	10
gap near have past		10		-9
gap near need copula	13
gap near need modal	12
gap near need none	-14	44	-6	-25
gap near need owed	6
gap near need past			6	-14
gap near none imperative	6
gap near returned	31
gap near returned copula	12
gap near returned past	22
gap near used imperative		13
gap near used modal	-10	21		-7
gap near used none			-5	12
gap near used owed	10	-10		-6
gap near used past				6
gap near. bought						13
gap near. bought none	24
gap near. bought past	-12		-10	-14		23
gap near. have				-9
gap near. have imperative	21
gap near. have none			24	-40
gap near. have owed	22	-12
gap near. have present	9
gap near. need copula	12
gap near. need imperative	-4			4
gap near. need modal	24	-5
gap near. need none	12
gap near. need past						10
gap near. need present	-12		7			12
gap near. none imperative	12
gap near. none owed		24
gap near. returned	-27		28
gap near. returned none	-28	10	23
gap near. used copula	32
gap near. used imperative	14
gap near. used modal	11
gap near. used owed		13
gap no none	-15	-23	-8	31
gap of need	41	-34
gap of need owed	29	-25
gap of none			8
gap of none copula	5
gap of those and need		13	-7
gap of used	28			-20
gap off used	22			-15
gap on have	12
gap on have none	12
gap on need	32
gap on need imperative	22	-8
gap on none none	19			-9
gap on used copula	-19			28
gap on used past	26			-7
gap on. used none		11		-14
gap or none	-16	25	-4	-19
gap out of none	11
gap over none	8
gap plus need	-32	41	-16	-31
gap put none				4
gap put none imperative				4
gap so none copula				6
gap so none none	-7		-21	15
gap so none owed	12
gap so none present	20
gap so used	18		-19	-18
gap still on have	14
gap the need	23
gap the need copula	24
gap then none	9
gap there's used	-7	-19	29	-17
gap there's used copula	-7	-19	29	-17
gap through none	35			-26
gap through none past	9
gap to none	23
gap to none copula	13
gap to none none	22
gap under none	11
gap up, used		-4		5
gap up, used none		-6		8
gap used, used	-32		38	-20
gap used, used past	-11		22
gap used. used	25		-5
gap used. used none	12
gap w/ none	5		-16
gap with none				14
gap with none copula	36			-17
gap with none past	-32			41
gap with used	-7			6
goods false true	9
group eachOf	6	-27	-16	6
group range	39	-19		-17
head 1	-24	11	15
head 2	13
head 2 x	11
head 2x4	-11	-8	8	7
head 3	24
head 5	20
head 7	-14	19
head abt	25
head ac	11
head access	16			-20
head access panel	-14					18
head acrylic	-24	17	-4	6
head adhesive	-20	-5	14
head aerator				7
head aff	28
head air	26
head air gap	-11		21	-6
head alarm	11
head almond		20	-13	-19
head alone	4
head already	18	-6		-18
head amps	27		-15	-7
head anchor	-25	-6		32
head anchors	-14			7
head anti tip bracket		5	-7	-12
head anyhow	18	-12
head anything	26
head apart	8	-30	-20	11
head architraves	22
head away	21
head b	17
head back	-29	-18		-14		60
head back door	19
head back wall	6
head baffles	27			-6
head bags	-24	16	20	-29
head ball	11
head ball catches	-21	17	12	-28
head ball valve	-18	22
head ballast	4
head baluster				-23
head balusters		-30	-6	23
head band	23	-21
head bar		10
head base	15
head baseboard	19	-5		-8
head basket	-26	18	14
head bath fan	21
head bathroom	-5	-12		17
head batt	22	-30		7
head batteries	-10			16
head battery	-6	19
head batts	-9	14		-18
head bays	42	-20		-28
head bead	11	-20	13	-20
head beadboard	9			-8
head beam				14
head beam's				11
head bearing	8
head belt	-32	19		21
head belt's	6	7	-10	-24
head belts	13
head bench	25
head bifold	-8				18
head big		5
head bit	45			-19
head bits	21
head blade		10	4	-19
head blank	18			-10
head bleach	9
head bled	8
head bless	11
head blind		11
head blinds				10
head blocking	29
head blocks	-18
head blue	21			-12
head blue tape		20		-22
head board	-24			25
head boards	-19			29
head bolt		-17		11
head bolts		14
head bond	-6	14
head bonding primer	-13	27
head bondo	-48			46
head bone	17
head boot	20			-4
head boots	27		-27	-31
head boss	23
head bottom	15
head bottom rail	4
head bowl	16
head bowls	-6	-10		13
head box	-10			5
head boxes	7	-20		-35		17
head boy	21
head bracket's	7	-26	11	-9
head brackets	-21		4
head brads	-24	14	-21		11
head braided lines	-13		17
head brass		13		-5
head breakers	-28		-20		16	20
head brick	-30		13	15
head bricks				7
head brother	16
head brown	30	-6
head brush seal					18
head brush strip	-7	23	-7	-28
head brushes	-37	19	26	-25
head bucket	-16	-14	17
head buffet	-6	15
head bulb	12			-9
head bulbs	-48	-18		11	22
head bullnose		21		-17
head bumpers	-18			16
head bushing	-11	22
head butt joint	18
head butt joints	11
head button	11
head bye	24
head bypass		-19	-9	20
head cab	5	-11	8
head cabinet	16
head cabinet doors		-14		10
head cabinets		-31	22
head cable				9
head cables	10	-32	-21	17
head camera	22
head can lights		-10		10
head cap	-6	15
head capacitor's	7	-16
head car charger's				7
head carcass	32
head carcasses	18	-21	-9
head card	24	-14
head carpet	39			-13
head carpet's	27
head cartridge			10		-15
head case	22
head casing	9	-10		-15
head cat	5
head cat6	-10			21
head caulk			11
head ceiling	24
head ceiling fan	-4	-21		-19		24
head ceiling tile		-20	12	-24
head ceiling white	-18	27	-20
head ceiling's	10
head cellulose				12
head cement	19
head center	33	-15
head centers		-12
head centre	9
head centres	29	-6		-18
head ceramic	15
head chair rail	24			-10
head chairs		12		-30
head channel		15
head charge	16
head chase	14
head check valve	-9			16
head chime	10
head chimney		11
head chimney's	31	-4		-5
head chunk	29	-10	-8	-4
head church	8
head circuit	29
head cistern				10
head clamp		-7
head clamps	-22	25
head clear	8
head clearance	8
head cleat		6		-5
head cleats			14	-27
head clip	-9	11
head clips	-48	16		17
head close	8
head closer	-6	16
head closer's	-24	-19	34	-18
head closet		-8	14
head closet bolts		16	-28
head closet doors	33	-13	-21	-9
head closet rod			13
head closet shelf	13
head co	19
head coat	6	-7
head coat hooks		-10		13
head cock	21	-16
head code	25
head coffee	-6	23	-16	-14
head coil	45			-28
head cold	31
head come	30
head company	21	-9
head complaint	14
head compressor	20
head condenser	-7			15
head conduit strap	24
head construction adhesive	-14				15
head contact cement		10		-10
head contractor bags			11
head copper	12	-9
head cord				14
head cord's	9	-20	5
head corner bead	27
head corners	23	-20	5	-27
head cornice	5
head counter	6
head countertop	17
head couplings			-7	17
head course	23
head cove base	39	-21	-10	-25
head cover		14
head cover plate	-8	17		-6
head cricket	19	-5		-5
head crown	11			-15
head crown's	28
head cup	-24	21	-16	8
head curb	10
head curb's	18
head cut	-8			23
head cut out	8
head cutout	5
head damper's	31	-21		-20
head dave	14
head daylight	9
head dead	7
head dealer		7
head deck mud	9	-6	-28	9
head deck screws	-12			13
head deep	51			-9
head dehumidifier	22
head delivery					8
head desk	21
head difference	16
head dime	22
head dimmer				-4
head dirt	25		-20
head discs	-44	15	9	10
head dishwasher	18
head dishwasher's	21
head disposal	20
head dog	24
head dogs		-5	15	-6
head door casing		-5
head door closer	-12	21		-20
head door jamb	11
head door stops		-16		14
head door sweep	-30	27	16	-24
head doornail	11
head downspout				16
head draft	-21	-6		18
head drags	23
head drain	26			-6
head drain's	21
head drains	16
head drawer	9
head drawer boxes	-22		16	-20		19
head drawer front	32			-33
head drawer fronts	38	-5	-21	-19
head drawer slides			-5	-15		15
head drawers	25	-8
head drawing	16
head drill	23
head drip edge	21			-5
head drop	47
head drop cloths	-23	-25	41
head drops	27
head dryer vent	36			-5
head drywall anchors	-14		17
head drywall's	-24	-12		32
head duct	14
head duct tape		7		-7
head due	17
head dumpster	29
head duplex	32
head earliest	17
head edge	32
head edges	22
head eggshell	-38	21	11
head either	14
head elastomeric	11			-16
head elbow	-29	42
head elbows	-31		7	21
head electric	9
head electrical	35	-22	-23	-23
head em	23
head enamel	-14	-40	42
head end	16
head end caps	-14		8	5
head end panel	23
head enough		-8	13
head entry	35			-14
head epoxy	-15	-7		23
head escutcheon		15		-19
head everywhere	13
head except	31
head expansion tank		21		-15
head extender				9
head extenders	-41	49		-13
head face frame	17			-6
head face frames	28			-13
head factory	13
head falls	23
head fan	33			-6
head fascia	16			-12
head faucet	-12					12
head faucet's	-6			18
head fault	28	-19
head feed	10
head fell off	15
head fella	27
head fence	21
head field tile's	-17			14
head filler	15	-12
head filler strip	-44	33	14
head filter	-15			5
head filters	-7			18
head final	6
head fine	26
head finish	6
head finish nails		41	-31	-18
head fire caulk		31	-27	-31
head fireplace	4
head first		10		-10
head first coat	14
head flame sensor	28			-12
head flange	8
head flapper		-9	-11	26
head flashing	13
head flashing tape	-23	4	-16	16
head flashlight	28			-5
head flat	7
head flex		6
head flight	10
head float	7
head float switch	-5	5	6
head floor	14
head floor drain		4
head floor tile	11	-40	27	-5
head floor's	6
head florist	9
head flow	23
head flue	32			-13
head foam	-17			17
head foam rollers	-25	42	-16	-27
head foil	-26	-8	17	7
head folks	20
head footings	28			-14
head force	27			-11
head four by four	-11	18	-6	-19
head frames		-6	15
head framing	14
head framing's	7
head fridge	13
head front	9
head front door	20
head front edge	5
head frost free	9		-15
head full	-23		11
head furnace			7
head furnace filter	-31		11	7
head gable	8
head gap	36
head gap's	9
head gaps	23			-11
head gary	35
head gas	25
head gas line	16
head gate	39
head gauge		8
head get	21
head gfci	15
head gfi	19
head glass	19
head glass doors	-22	-15	9	15
head glides	20			-5
head globe		13
head glue's				-23
head go	23
head good	32			-12
head grain	20	-10
head gravel	17		-10
head gravel's				11
head gray		-10		20
head grease				6
head green	16
head grid		-6		14
head grille	21
head grinder	22
head grout	8	-17	12
head grout's	-8		18	-26
head guillotine	38	-21		-8
head gutter	8	-28	-6	6
head gutters		-15		14
head guy	29
head guy's	-5	13		-13
head guys	17
head ha	10
head hair	37	-5		-14
head hall	-16	-30	-25	16		20
head hammer	25	-15
head handle		8
head handles		-11		-35
head handrail	32			-10
head handrail brackets	13			-18	7
head handrail's	15
head hang	18
head hanger		-19	-8	12
head hangers	14			-29
head hard	19			-13
head hardware		-16	17
head hardwood	-26	-27		28
head hatch	20
head haze	4
head head				5
head header	31
head hearth			6
head heat mat	22
head heat mat's	24			-10
head heat pump	25
head heat's	12
head heater			14
head height	23
head height's	4	8	-10	-18
head hello	12
head herself	21
head hidden clips		-4	6
head hidden hangers	-14		-8	23
head high	53			-9
head higher	15
head hinge	5
head hinge screws		19	-25	-5
head hip	17
head hiya	20
head hob	-10	12		-7
head hole	48
head hole's	7
head holes	38
head home	12
head hon			7
head hood	26
head hook	24
head hooks	5	-29
head hose bib	19
head hot	8
head hot mud	25			-10
head hot side	11
head humidity	15
head inside corners		19	-9	-23
head insp	25
head instead					10
head insulation	11	-9			12
head itself	20
head j channel				-5
head jack	31	-8		-15
head jacket	15
head jacks	-13	-19	22	-8
head jam	9
head jamb	21
head jan	-6	18		-12
head jefe	14
head job	17
head joints	13
head joist	49		-27
head joist tape	-23	13	-9	15
head joists		-11			12
head keep	11
head keeper	9
head key	22
head keys	33	-20	-6	-6
head kick	-14			20
head kilz	-48	-5	38	25
head kit	-47	49	7	-8
head kit's	-25	5	23
head kitchen				11
head kitchen island	9
head kits	-45	24	28	-7
head knees	7
head knife	26
head knob		8
head knobs	-11	-11	12	13
head lacquer			7
head lads	9
head lady	20
head lags	-16	9	-17	16
head laminate		-16		12
head lamp		-5		6
head landing	21
head latch	22
head latches				-11		10
head laundry box	27			-5
head laundry sink	23			-10
head lav	14
head lead	20
head leaves	19
head led	-11		-5	20
head ledger	30
head left hand	-20	23
head leg		6
head legs	-5			9
head lid	-9	15
head lid's	7
head lift	26
head light	30
head light switch		-18	21	-17
head light's	14
head lights	46			-6
head line set	25
head lines	28
head lineset		11		-6
head lint	26	-13		-9
head lip	16			-6
head list	20
head live	-8	-11		18
head lock		-12		9	5
head lockbox		-16	-8	-11	20
head locks	5		9	-17
head lol	27
head long	28
head long wall	8
head loop	23	-8
head loose	36
head lord	22
head low	42
head lowers	-14			19
head lugs	24
head luis	28
head lvl		18	-5	-21
head machine	24	-8
head maglock	25			-12
head main	8
head man	20
head manifold	29	-21		-18
head mantel	16
head maple	23
head marble	41			-12
head marco	15
head mastic	-6			10
head max	12			-16
head maybe		-7	32
head meantime	23
head meanwhile	29	-21		-16
head medallion	11	9	-20
head medicine cabinet	19
head membrane		-18		12
head mesh			-10	17
head meter	22
head microwave	18
head mind		-13	18	-10
head mini split	24
head mirror	24
head mirror's			-14			8
head mirrors	13	-16	-6
head mix	-15	12
head mixer	-5	-13	20
head moisture	6
head morning	20
head mortar	-22	15		6
head mortar's	-15	-18	31	-19
head mosaic	25			-15
head mosaic's	-7	-8	-4	17
head motor					13
head mud	-21	31
head mudroom bench	28
head multi-finish	-27	19	14	-14
head must	29
head myself	30	-11		-13
head nah	18
head nail	38			-11
head nail holes	12
head nail plates	-44	25
head nailer	-4	13
head neutral	32
head newel	9
head niche	9
head nickel	12
head night	24
head nipple	-6	22		-25
head nos	-39	-7	9	35
head nosing		-4		-10		16
head numbers	-5	-15	19	-16
head nut		-11
head oak	30
head ofc	11
head old	20
head one's	24
head only	28
head open	18
head opened up	28			-9
head opener's	22
head opening	22
head orange	18
head order	19
head outlet	47
head outlet covers		-37	-29	4		23
head outlets			9	-12
head outside	-13	28
head outta		-25	-13	18
head oven	27
head overhang	16
head own	28			-17
head packing	-9	-16		15	5
head pad	-6			19
head pads	-13	20
head paint's	34			-8
head pan		18
head pancake	22	-28	11
head pane		9
head panel's	24	-8
head panels				7
head paper	30
head parlor	7
head part	25
head part's	16
head particle board	-15		20
head paste	-8				16
head patch	27	-11
head patio door	-11			17
head pavers	12	-21	-20	5
head pendant	11	-11
head penny round	-8	-26	24	-25		9
head people	5
head pete	13
head pex	-16	-18		27
head phone	7
head photos	31
head piano hinge	-20	10	-12	14
head pickets	-25		-9	10		23
head picture	30	-8
head piece	-20		13	18
head pieces	20	-25
head pins		28	-17
head pipe's	30	-8		-17
head pipes	14		-18	4
head pitch	26			-8
head pivot	20
head plank	20	-14		-13
head planks	-29		33
head plaster	17	-12
head plasterboard		-15		-15	19
head plastic	19
head plate	-25			23
head plates	-47	16	9
head please	-33	54	-16	-41
head plenty		6	-19
head plinth	35	-7
head plinths	-15	-9		22
head plug's	6
head plugs		4	-14
head ply		-6	16	-11
head plywood	9
head plywood's		12
head pocket	7
head pocket door	27
head poly				5
head post	25
head posts		-31	-12	12
head precharge	25			-5
head press	14
head pressure	29			-16
head primer			15
head print	26
head profile	14	-7
head prv	-26	24			11
head pull	25
head pulls		-4				12
head punch	10
head purple board		6	-15
head put	23
head putty	-8			24
head pvc	-30	7	-5	30
head quiet				-10
head quikrete	19	-10		-9
head rack	24
head radiator	7	-9
head radiators	41	-26	-12	-31
head rafter				14
head rails				8
head rain	17
head range		11
head range hood	-20		30
head read	26
head rear	23
head receipt	36	-25
head receptacle	22	-7		-11
head receptacles	-5	-8		5	9
head red	5
head reducer	-18	20		4
head register	6
head relief valve	23	-10
head relief valve's	27		-7
head remains			17	-17
head remote	23
head render	13	-12	13	-18
head rental	28
head repair kit		23		-5
head replacement	11		-7	-15
head report	13
head return	17
head reveal		9
head rh	19	-7
head rick	12
head rigid	-11			14
head rim	-23			31
head ring	-36	6		28
head rise	21
head riser	21
head riser's	20
head risers	56	-37		-33
head rm	10
head rock	39
head rocks	17
head rod	6	-17			10
head rods	-44	15	10
head roll	16	-24	7	-21		-10
head roller	-11	27
head rollers	7
head roots	21
head rosette	5	4	-9
head rough			9		-8
head rough in	15
head round	58
head row	16
head rubber	12			-5
head rudy	6
head run	60			-4
head runner	-11	19
head rush	15
head salon	36			-6
head sample	34	-20
head sand	22
head sand paper		21		-18
head sandpaper	25		-11	-21
head sandwich	21
head sash		16
head sash cord	-7	16
head satin		-30	34	-30
head saw	17
head sconces					4
head scrap	12
head screed	5
head screen		-4				17
head screw				23
head screwdriver	24
head screws				30
head scribe	14
head scribe molding		-17	23	-17
head seal	-8			15
head sealant	-37	31	5
head sealer					5
head seam	8
head seam's	26
head seams	34			-14
head seat washer	-26			20	18
head second		15
head self leveler	-22			31
head semi gloss	-18	13		7
head sensor	-16	12	12	-11
head set				11
head shd	14
head sheathing	9			-8
head sheet rock			-20	-4	19
head shelf	14
head shelf brackets	-33	27	-19	12
head shelf pins	-8	-7	-13	25
head shellac				6
head shellac primer	-7	-20	23	-20
head shelves		-34	-16	25
head shims	-46	16		17
head shingles	24	-9	12	-27
head shld	17
head shoe	-4	25		-18
head shoes	29
head shop	8
head shot	18
head shower			4
head shower pan	23
head shower walls	26			-18
head shut off	30	-17	-5
head shutters	5	-9	-6
head side	19
head sides	47			-31
head siding	9	-33	6
head sign	32			-23
head sill	8
head sill's	14
head silver	19
head sink	36
head sink base	6
head sir	12
head skim	25	-15
head skip	12
head skirting	-8		6
head skirting's	-15	17	-11	5
head slab				-5
head slab's	-14					20
head slabs	-23	-25	23	-17		17
head slate	7
head slats		14	-14	-26
head slatwall		-22		11
head sleeve	26
head slider	16
head slider's			7	-7
head slides			-6
head slip	-10			15
head slope	9
head slow	34
head smoke	8	-24	-10	7
head smoke alarm	10	11	-27	-11
head smoke detector				10
head socket				6
head sockets	-18	-39	12	17
head sod	-14			19
head soffit	43	-4
head soffit vents	38			-24
head soffit's	25
head soft close	23	-12
head somewhere	25
head son	9
head sorry	23
head spacer	-9	-12		21
head spacers	5
head spare	-34	-27	41	-25
head speakers	-20	-13	17	4
head spec	12
head spins	19
head splice	36
head split	21
head spots	27		-5	-26
head spout		16	-6
head spring	30
head springs		-22	-12	18
head square	38	-9		-9
head stack	37	-20	-7
head stain	32	-28	5	-13
head stainless	29	-10
head stair	12
head standards				9
head standpipe	16
head staple	17	6		-27
head staples	4	-13
head stat	18
head static	33
head stem	34			-17
head step	20
head stile	16
head still	44		-31
head stock		-12	16	-7
head stone	-7			15
head stone's		12
head stones		22	-24
head stools	19
head stop	35	-14
head stops	-7			12
head store	16
head storm door	-32	-7	23	-21		24
head story	12
head stove	10
head straight		10		-11
head strainers	-33		8	27
head strap	-19			30
head straps	-8	24		-11
head street					10
head string	24
head stringers	-7		16
head strings	30	-16		-31	8
head strong	15
head structural screws	-46	39		11
head stub	18
head stub's	20
head stucco	11
head stud	15
head studs				-5
head subfloor	21	-19		-18
head subfloor's		-17	13	-15
head sump	15
head supplies	13
head supply line	-15		-7	-25	23
head supply lines	-5			11
head supply plenum's		14
head supposed	27
head svc	5
head switch	25	-6
head switches		-15		8
head tack strip	28
head tag	36			-23
head tailpiece	-30	21	22	-19
head tank	-8	10
head tap	27		-13
head tapcons	-44	36	-10	12
head tarp	-16	9		10
head tee	-15			18
head temp	22
head template	21	-7
head tester	-13	23
head the lady	-22	30	-9	-11
head thermostat	29
head thick	9	-15
head thin set			11
head thing	12
head thinset	-13			26
head though			12
head through bolt				7
head tile's	17
head tiles				-17
head time	8
head tip's		6
head toe	7
head toe kick	14
head toe kick's	14
head toggle bolts			-9	-6	22
head toggles	-43	31		14
head toilet flange	12			-5
head toilet seat				10
head toilet's	23
head tony	25
head too short	22
head top edge	5
head top pivot	-16	20
head towel	22			-25
head towel bar	-35	-36	-20	-31	28	21
head track	52
head traffic	15
head trailer	25
head transformer's	-7	6
head transition	24
head transition's		4
head trap	8
head trap arm	21
head trash pullout	25	-9
head travelers	16
head tray	15			-15
head tread		8	-14
head treads	5	-7
head trench	10
head trim	19
head trim screws	-26	-20	21
head trim's	24			-8
head trims	29	-10		-11
head truck	31
head trunk	32	-5	-18	-18
head tub		12
head tub drain	20
head tub's	31			-10
head tubes	-24	-21	10	20
head twice	22
head two	20
head two by six	9			-13
head two by ten	24		-8	-16
head type s	-6	-18	13
head underlayment	7	-35	12
head union	-16	29		-15
head upper		-5	-12	9
head uppers		-21		4
head upstairs	-15		-23	35
head upstand	19
head ute	23
head vac	-11	-15	19
head vacuum	5
head valve	12
head valves		13	-4	-13
head van	15
head vanity light		-8		6
head vanity top	14
head vanity's	16
head vapor barrier		10
head varnish			-8	22
head veneer	17		-9	-28
head vent	30
head vent stack	31	-10		-11
head vinegar	13
head vinyl plank	-29		15	12
head wainscot	18
head wait	31	-6
head wall	16
head wall bend	12
head wall paper	12	-11	-21	9
head wall tile	22	-32	18	-6
head wall's	23
head wallpaper		-26	25	-25
head walls	55			-12
head walnut	-7	18		-9
head washer	-12			15
head washer box				6
head washers	-53	57
head waste				12
head water	17
head water heater	18
head water heater's	32	-13		-11
head water's		10
head wax	-31		17	22
head wax ring	-46		18	33
head wax rings	-11		16	-9
head wc	30
head weatherstrip		8
head weight	-20	-24	6	19
head well		8
head when	15			-12
head whenever	-14	18
head whip				16
head white	36
head whoever	25
head wide	37	-11
head width	8
head wind	10
head window	6
head window stool	15
head window's	11
head windows		-11		5
head winter	16
head wire	12
head wire nuts	-4	-12		18
head wire's	-10	8	9	-14
head wires	59	-31		-40
head won't latch	5
head wood filler	-27	27	-18	11
head wood glue	-22	28	-27	-8
head work				7
head worktop		-17
head wrap	21
head wrong	-7	18		-5
head x	-14				4
head yellow	11
head yet	13
joined and none				8
joined and owed	18
joined comma modal	7
joined run-on none	48
joined start none	34
joined start owed		7
joined start present	25
joined stop imperative		5
joined word imperative		9
joined word modal		7
joined word none		19
kept			36
last cue ate other	-5
last cue bought other	-10	22
last cue bought same	-23	9		-20	38
last cue lacks same		11
last cue need same		33
last use buy imperative same		20		-32
last use buy modal same	-4	12
last use buy owed same		-20	16	-12
last use buy past other	14
last use buy past same					15
last use buy present other		21	-16	-16
last use buy present same	10	-29	-18	-25	19
last use have imperative same	-5	18
last use have past same	9			-13
last use measure imperative other		8
last use measure imperative same			10
last use measure modal other	-17		22
last use measure owed other	7
last use measure owed same	18
last use measure past other	-21			32
last use measure past same	13
last use measure present other	-5	-4	17
last use measure present same	14
last use move imperative other		5		-6
last use move imperative same	14
last use move modal same	28			-6
last use move owed same		11
last use move past other	11
last use move past same			9
last use move present other			6
last use move present same		6
last use need modal other	20
last use need modal same	-14	12	11
last use need owed other	5
last use need owed same		17
last use need past other	13
last use need past same	-6	16		-6
last use need present other		18	-17	-17
last use null imperative other	18
last use null imperative same	27			-9
last use null owed other	15
last use null present same	-4	17	-24
last use other imperative same				-5
last use other owed same		26
last use other past other	14
last use other present other	15
last use return past other	19
last use say modal same	-7	9
last use say owed same	32
last use say past other		-15
last use say present other			8
last use see imperative other		-7	6	-16	15
last use see modal same	26
last use see owed same	21	-8
last use see past same	10
last use use imperative other	-25					26
last use use past other	17
last use use past same	-17	-5		23
last use use present other	14
last use use present same			14
last use work owed other		13
last verb add other	6
last verb add same	-13	-14	8	14
last verb adjust other	22
last verb adjust same	26
last verb arrive same	-15	-28	38	-34
last verb ask other	4
last verb ask same	41
last verb balance same		12
last verb blow same	-8	5	-6	8
last verb bolt same	-11	-31	-9	12	19
last verb borrow same	-14	21		-21
last verb box same	-11			19
last verb break same	-25	14	16
last verb bring other	9
last verb bring same		25		-17
last verb build other	18
last verb build same	22
last verb buy other	16
last verb buy same				-13	9
last verb buzz same			-6	7
last verb call other				12
last verb call same	-24	12	9
last verb can same		8
last verb can't same	29	-13
last verb cap other			11
last verb catch same	21
last verb caulk other	19			-6
last verb caulk same	16
last verb change other	-5	26		-20
last verb change same		-10		30
last verb check same	7
last verb chuck same	-13		19
last verb clamp same			6
last verb clean other	32
last verb clean same		-13				13
last verb clear other	17
last verb clear same	39			-27
last verb close same	-5		18	-33
last verb come other	16
last verb come same	9
last verb consum same	-21	-29	-9	32
last verb core same	-27			33
last verb could same	18
last verb count same	-9	12
last verb cover other		4
last verb cover same	-5	21
last verb crack other	27	-22		-16
last verb crack same	-24	21
last verb crush same	7
last verb cut same	-9
last verb deliver same		-29		15
last verb dial same	21
last verb didn't same	13	-17
last verb die same	19	-9		-10
last verb dig same				18
last verb do other		-11	7
last verb doesn't same	19			-28
last verb drain same		-9		10
last verb drill other		9
last verb drill same	16	-24		7
last verb drip same	7
last verb drive same		-5		13
last verb drop other		8
last verb drop same	34
last verb dump same		13
last verb eat same	10
last verb email same	14
last verb end same	18
last verb exchange other	20
last verb feather same		17		-11
last verb feed same	-6	-7		17
last verb feel same	4
last verb figure same			20
last verb file same	-28			25
last verb fill other		-8	17	-8
last verb fill same	25		-7
last verb find other	-33	-9	14		22
last verb find same		-4	11
last verb finish other				11
last verb fire same	-18	21
last verb fit same	-9			22
last verb fix same	-6			20
last verb flash other	11
last verb flip other	-16	22
last verb float same	-14	20		-6
last verb flush same	26			-6
last verb foam other	-21	20
last verb foam same	16
last verb forget same	25	-23
last verb frame same	-14	11
last verb fre same	23
last verb give other	-6	-13		13
last verb glue other	12	-22
last verb grab other	16
last verb grab same					12
last verb grout same	-15			18
last verb guess same		12		-8
last verb hand same	-22		-12	13		20
last verb hang same		-16		36
last verb haul same	4
last verb haze same	8
last verb he'll same	18
last verb hit other		6
last verb hit same	7	-8	5
last verb hold other		-15		8
last verb hose same	20			-8
last verb hum same				-17		17
last verb install other		11	-8
last verb keep other	12	-4
last verb kick same	36
last verb knock same				12
last verb know same	-4	-9	12
last verb land other	11			-14
last verb land same	-22		20
last verb latch same	14
last verb lay same		5
last verb leak same	33	-5		-5
last verb learn same	31			-18
last verb let same			15
last verb level other	5
last verb level same				8
last verb lift same	6
last verb like other	8
last verb like same	-4	4
last verb listen same	5
last verb look other	-10				18
last verb look same	27
last verb make other			16
last verb mark same				-6
last verb measure other	-21		-12	18
last verb measure same	52			-16
last verb meet same	10
last verb meter same	31			-10
last verb miss same	16
last verb mitre same	30	-15
last verb mount other	31	-6	-8	-10
last verb move other	-16	18
last verb move same	42
last verb must same	24
last verb nail same		8
last verb need other	22
last verb need same		34
last verb notch same	23
last verb notice same	15
last verb open other		10
last verb open same	6	-15	6
last verb order same		4		-18
last verb owe same		21
last verb own same	24
last verb pack other	4
last verb pack same		-39		17
last verb paint other	5
last verb paint same	19	-22
last verb pass other	12
last verb pass same			-14	-12	26
last verb patch other	-9		14	-19
last verb patch same				4
last verb peel same		-14	16	-9
last verb phone same		7		-7
last verb pick same					14
last verb pin other	16
last verb pitch same		5
last verb place same	-9			15
last verb plane other	12	-19	10	-19
last verb plane same	16
last verb plug same	4
last verb plumb same				4
last verb point same	-16			21
last verb pop same	15	-14	12	-34
last verb pour same	-17	29
last verb prime other				12
last verb prime same			15	-17
last verb promise other	-10	-11	21	-11
last verb pull other	-9			16
last verb pull same				8
last verb pump same	11
last verb push same	12		-25
last verb put other				12
last verb put same	-8
last verb quit same				4
last verb rack other	34	-18	-14	-19
last verb rake same	-10	4		10
last verb rate other	12	-18	-15
last verb rather same	9
last verb reach same	-7	16
last verb read other	-28		33	-23
last verb read same	8	-7
last verb redo other	18	-10
last verb redo same	-21	14	23	-26
last verb refasten other	20
last verb reglue same	23	-10		-13
last verb rehang other	27
last verb rehang same	16	-7
last verb repair same				5
last verb replace other	-16	13
last verb replace same	-14			20
last verb require other	20
last verb require same		34	-44	-48	-10	-4
last verb return same	15
last verb rip other		12
last verb rip same	39			-14
last verb rock same	16
last verb roll other	17
last verb roll same		-5	-5	13
last verb rough same	6
last verb run other		-9	-4	5
last verb sag same	8
last verb sand other	22	-18
last verb sand same	-12
last verb say other	18
last verb say same	30
last verb scrape other		15		-6
last verb scrape same	4
last verb screw other	28
last verb scribe other	13	-8
last verb scribe same		5
last verb seal other	14				5
last verb seal same	8
last verb see other	5
last verb send other			13
last verb set other		-7		8
last verb set same				5
last verb shim same				16
last verb short same	28	-16		-5
last verb show same		18
last verb shut same	25			-12
last verb silicone same		-5	-28	19
last verb sister other	24
last verb sister same	12	-29
last verb sit other	-24	-15	16	14
last verb size same		12
last verb skim same	8
last verb skin same	6
last verb slide same	15	-17
last verb slit same			18	-23
last verb smell same	26
last verb smooth same	-8	-18		18
last verb snake same	28
last verb snug same	-5	16		-12
last verb soap same	10
last verb spend same				10
last verb spin same		12
last verb splice other	16	-11	7	-24
last verb spray same	37	-18		-22
last verb square same	8
last verb squeak same		9
last verb stand same	7
last verb start other	37	-14
last verb start same		-13		9
last verb stay same			14
last verb stick other		9		-16
last verb stop other		11
last verb stop same	-8				17
last verb straighten same	-8		-21	-31	24
last verb stretch same	5	-15	-5
last verb strip other	-22			23
last verb strip same		6
last verb stuff same		-13	-14	17
last verb swap other	-6		16
last verb swap same	4
last verb swear same	20
last verb sweat same	12			-16
last verb take other		8
last verb tap same	23	-8
last verb tape other					9
last verb tape same	36			-14
last verb tear same	39			-18
last verb tell other	-13	-10	11	11
last verb test same	8
last verb text same		-6		15
last verb they'll same				8
last verb think other				10
last verb throw other	9
last verb throw same	-6	11
last verb tie same	34	-9		-24
last verb tighten other	4
last verb tile same	-5	13
last verb top same	28	-12		-8
last verb touch other	-12	20
last verb touch same	18
last verb trace same		-15		4
last verb trim other	-4	18
last verb trim same			-10	7
last verb trip other				5
last verb trip same		9
last verb try same	13		-18
last verb turn other	15	-9		-15
last verb turn same	9	-8	10	-16
last verb use same	-14			23
last verb vacuum same	33			-22
last verb wait other	20
last verb wait same		14
last verb walk same	8
last verb wanna same	-19	-10	-5	-12	22
last verb want other	-7		6	-12
last verb wash same	28
last verb weep same	6	6	-16	-8
last verb wipe same	18
last verb wire same		8		-7
last verb work same	28			-12
last verb would same	10
last verb wouldn't same				11
last verb wrap same				7
last verb wrote same		-6		6
left # G	8
left # Q			13	-24
left # T	26
left # about	-10	6	-14	13
left # add	-5		-6	20
left # all	-27	-28		42
left # at	10
left # attic	19
left # back	21
left # bath	8
left # bedroom	12
left # box	19
left # bring	-7	23
left # buy	-11	14			12
left # caulk	18
left # change	-19	14		11
left # closet	16
left # cut	-6	6
left # dining room	16
left # do		-5		9
left # every	36			-15
left # figure	-36	42		-8
left # finish	-7	-11	-19	20
left # for	28
left # from	-7	-8	28	-21
left # garage				6
left # get	-37	58		-11
left # hall	7
left # hall bath	-4		17
left # hang	-20		15	7
left # have			35
left # hit	8
left # i	10
left # i'll	5
left # i'm	10			-9
left # i've	12	-12		-14
left # in	29
left # it	13
left # just	34	-6	-5
left # keep		-6	10
left # laundry	7
left # leave			6
left # let	10
left # living room	17
left # make	24	-17
left # master	9
left # master bath	14
left # maybe	-27		24	-12
left # move	5
left # need		21
left # nobody	8
left # of	23
left # on	15
left # only		-16	15	-15
left # order		5
left # other	5	-15	11
left # pantry	20
left # porch	12
left # prime	-15			18
left # pull	9
left # replace	-17			22
left # return	-5	-17	-22	-18		29
left # screw	-11			14
left # seal	4
left # short	-39	51	-6	-14
left # sister		-5
left # swap				9
left # take	-10		-9			21
left # test	4
left # that's	-14	8		14
left # the	-11		31	-13
left # there's			25
left # they're	26	-5		-7
left # throw	-19	36	-6	-12
left # use				30
left # want		5		-13
left # we	12
left # we're		8	-13	-11
left # with	42	-5		-14
left &	-16			12
left '	10
left (			-11
left +	-16			5
left -	8
left /	29
left 1 /	19
left @	31
left G &	-24	13	-7	10
left G (	28	-14	-13	-7
left G +	-20	20
left G G	-16	-13		20	6
left G Q		31	-25	-29
left G T	5			5
left G about	33
left G and		13
left G are	23			-6
left G be	20
left G before	7
left G by	7
left G down	-14	-11		21
left G for	32
left G from	4
left G get		-5		12
left G has	28
left G have	35		-10
left G is	41
left G leave	27		-23
left G miss	11			-14
left G need	-5	23
left G not	8
left G of	5	-11
left G off	12
left G or	39	-21
left G take		-5		7
left G the	37	-4		-15
left G to	23
left G under	7
left G want		12
left G where	13
left G with	27
left G wouldn't	7
left N and	-14	31		-7
left N by	10
left N for		5		-13
left N in	28			-10
left N of	-8	6
left N with				14
left Q +	4			-5
left Q @	4
left Q G	-25	19		8	-5
left Q Q	27	-11
left Q above	11
left Q and		25
left Q at	4
left Q before	7
left Q by	33
left Q for	22
left Q from	10
left Q in	34
left Q need	-15	21
left Q of	32
left Q off	24
left Q on	29
left Q over	32
left Q short	33	-26
left Q then	9
left Q through	35			-30
left Q to	34
left Q toward	8
left Q under	22
left Q where	13
left Q with		-16		16
left T after	5
left T and	6
left T between	14	-11
left T for		6
left T if	14
left T in	17
left T to	19
left T with		33	-5	-24
left a					11
left a G	40	-31
left above	12
left across	17
left add				10
left again	7
left against	18
left all				27
left all in	-13	-17		22
left along	22
left already	14	-10	4	-6
left and after	6
left and half	-17		16	-19
left and it	13
left and then	21			-6
left are	34
left are in	-8	-10		26
left are on	6	-10
left around	31
left as	36
left ask	21	-5		-7
left at	23
left attic	19
left b	27
left back				-11		19
left back in			16	-11
left back of	23
left back to	29
left back with		12
left bar	12
left bare	17
left basement	17
left bath	10
left bathroom	8
left bedroom	14
left before	21
left before i	9
left behind	17
left below	12
left bend	16
left beside	10
left between	26
left black				-5
left blow		-5		9
left book say	22
left bottom of	24
left box	21
left br	-6	-10		14
left break	-7	13
left break in	13
left bring		15
left bring back	-20			-7		16
left bring me	-20	27
left burn	-6			22
left burn through	-12			27
left buy	-15	9		-4
left by	18
left by Q	23	-6
left by T	-6	-6	22	-21
left c	15
left call	5
left call for	27
left call it		9	-5	-17
left can't	9
left can't get	19
left caulk	14
left ceiling				12
left change	-5	8
left check	9
left chip on	6
left choose	9
left clean	13
left clear	15
left clip	-26		8	7
left closet		-5	17
left come		-7	6
left come in		-7	16	-14
left come out	23
left come up	37	-20		-12
left come with	16
left count	-21	8	21	-26
left cover	17
left crack	4
left cut in		-4		5
left cut out	12
left dead	14
left dig	15
left dining room	12
left down				15
left down from	25
left down to	-14	-26	46	-38
left down with	38			-22
left drill	19
left drip	16
left drip on	13
left drive	-10	-9		26
left drop	4
left eat	-6	-10		27
left em	-14	24		-7
left enough	12
left entry	12
left every	7
left every time	7
left exam	26
left except						18
left family room	4
left fifth	21			-6
left figure		19	-13	-22
left fill	20			-4
left fill with	-23	-11		37
left first	-6	21	-13	-19
left fit		-8		13
left floor	5
left flush	23
left foam	-8	-13	-6	25
left forget	-7	16
left frame	7
left from	11
left full of	17
left get			14
left get me		22
left get to	12
left give	23
left give me	-5		-6	-14	16
left glue	27
left go				8
left go and			17
left go back	-7		18
left go in	14
left go on	18
left go through	-36			58
left gonna need	17	-12
left gonna want	-10	24
left good		-15	18	-7
left gotta	4
left gotta be	6
left grab	-9	11			15
left grab me	12
left grind	-6			13
left half	-23		27	-14
left hall	8
left hall bath			14
left hand		-6	13	-16
left hang				8
left hang by	32
left hang on	-11	10		4
left have			5
left have in	19		-5
left have only	7	-8		-7
left have to	11
left he	9
left he need	-20	29
left he want	25	-14
left he'll want	-7	21
left he's get			8
left here	-31	-19	36	-17
left him	5			-8
left hit	23
left hold	17
left hole in	9
left hook up	12
left how	15
left i	11
left i bring		-9	-9	-14		23
left i buy	-12	-16	-16		24
left i change	-13			27
left i count	-10	10	7	-21
left i cut	7
left i do	11
left i drill	5
left i drive	-28	-5		33
left i figure	29	-18	-16	-11
left i finish	19
left i forget	-14	19	-6
left i get	-22		35
left i glue	5
left i hang	-11			22
left i have	-21		40
left i hold	7
left i lay	-10			16
left i leave	-16		22
left i make	10
left i measure	5
left i need		5
left i open	29			-19
left i paint	10
left i pull				12
left i put				26
left i run	-10			27
left i set	-8	-6		22
left i sister				6
left i stick		-4		11
left i swap	-31			38
left i take	-14	-19	-8	11		14
left i think			6
left i use	-19			32
left i want	5			-12
left i will	8
left i'd like	-31	37
left i'd say		11	-15	-16
left i'll need		-9	21
left i'll want	-26	30
left i'm	11			-6
left i'm at	17
left i'm short	-16	25		-10
left i've	12	-10		-11
left i've get	-27	-5	51
left i've put	13
left if	10
left in Q				10
left in about	30		-14	-19
left in at	21
left in for	12
left in the	5			-7
left in there	6
left in with		11
left inspector want	24	-9
left instead of	21			-14
left into	28
left is at	10
left is for	-5	12
left is in			17	-8
left is on	8
left is only	14
left it	9
left it T		-16	-5	13
left it and	-21	8		13
left it at	22
left it be	32
left it before	14
left it by	20	-15
left it for	-19	19
left it from				11
left it have	24		-15
left it in	-4			25
left it on				6
left it out	-12			18
left it run	18
left it take		-12	-13	16
left it to	39			-12
left it up	19	-14		-11
left it with				16
left it's get	-12	5	-23	12
left it's in	21
left its last	18
left job	-9			13
left just	4
left just need	5			-8
left kill	7
left land	16
left last		-5
left last of	-31	-9		38
left laundry	21	-4
left lay	-14			24
left lay in	-12	11	7	-27
left leave in	7
left leave of	-4		13
left leave on	15
left lift	6
left little	4
left living room	18
left long	24			-12
left loose	26
left lose	25
left make	37	-7
left master	9
left master bath	12
left match	14
left maybe	-16		39
left me	-8	22
left me is	27	-4		-4
left me up	-20	32
left measure	6
left meet	10
left miss		16
left miss at	6
left miss from	-21	26		-5
left mix		-11	-8	20
left more than	13
left move	22
left mud and		-7		8
left must be	7
left n	14
left near	16
left need		19
left need G	-7	16
left need a	-16	20
left need to	21	-7
left new	-24	33	-7
left nick	8
left no	24	-17	-10
left nobody	8
left not	23
left notch	16
left number N	19
left of G		-17	9
left of the	50	-11		-26
left off	13
left off with	28			-5
left office	11
left old	26			-8
left on	6
left on all	7	-10
left on every	23
left on in	15
left on it	-24			22
left on with	-17			25
left once	8
left one's	24
left only		-20	20
left only get	-43	-17	44
left only have	-34			28
left open	5
left or		8
left order	-6	16			6
left out	12
left out of	37
left out with	-19	-15	-7		28
left outta	33	-5
left over	30
left over by	17
left over to	23
left owe	-7	15
left pack		-6		11
left paint	24
left pantry	21
left pass				6
left past	26
left patch	26
left pick	10
left pick up	-31	8		-16	42
left please		6
left plug	21
left point	22
left pop	11
left porch	12
left pour	-20		-8	29
left prime		-17		9
left push	7
left put				5
left put in	-23			30
left quick	24
left rate	10
left read	18
left ready for	12
left replace	-11			12
left rest	-44	-33	46	-33
left return		-19		-20		25
left right	-13	19
left right down	11
left right through	16		-7
left ring	15
left rip	6
left roll	5
left round	11
left sand	-8	4	9
left say	23
left scrape	15
left scratch			12
left screw			-8	13
left screw and	10	-20
left screw in	-15	15
left screw to	21
left scribe	28
left seal	13
left see	11
left send	-13	11				11
left send is			13
left set				17
left set in	22			-10
left she	14
left she want		10
left she's get	-9		11	-10
left shim	5
left short	-25	30		-16
left short by	-12	22		-11
left short of	-13	19
left short on	24
left should be	21
left shut	10
left shy of		-12		11
left side		-5	-8	6
left sign	-13		22
left since	14
left sister	7	-9
left sit		6
left sit in	10
left sit on	23
left snap	12
left snug	11
left so	6
left somebody run	24
left sound like	18	-9
left spend	-25	-18	-23	33
left split	6
left stack	-10	-9		19
left stand		10
left stick	-10			13
left still	-8		28
left still get	-23		30	-14
left still have	-11		35
left still in		-20	16	-9
left still need		11
left still on	11
left still owe	23	-4
left strip	22
left stuff	-15	16
left supply	22	-14		-11
left swap	-10			36
left swap for	-20	21
left take	-17			14		11
left tape	9
left test	5
left than	18
left that			16
left that be	-15	-22	-14	30
left that eat	-5		-7	18
left that want	-5	11		-5
left that with	-9			21
left that's	-12	6		13
left the G	21
left the kitchen	31			-12
left the lady want	-18	22
left the last	13		-9
left the leave	14
left the other		16	-5	-14
left the right	-13	19
left the wrong	14
left them				-5	14
left then	8
left there			6
left there be	19
left there is	-9	-28	27	-19
left there's			23
left there's only	-15	-19	28	-29
left they want	-6				18
left they're	26	-5		-7
left thing	-12	-9	21
left think			6
left those	8	-15	9
left those and	-5	26	-9	-9
left through				35
left throw	-33	28		6
left tighten	20
left tile	-12	18
left till	14
left to	6
left to be	13
left to bring	6
left to do	20
left to get	12
left to move	16
left to pull	11
left to put	-30	32		13
left to see	14
left too	22
left top		7
left top of	16
left touch	9
left toward	6
left trim	20
left truck eat	17
left try		-17	14	-11
left turn	24
left under	24
left under it		16
left unit N	19
left until	18
left up					6
left up at	5
left up from	10
left up in	25
left up on	-20			32
left up with	14
left us	-17	33
left use				33
left use about	-18			32
left use up	-20			29
left wait on	-13	23
left wall	18
left wall to	7
left want		8
left wash	16
left way	5
left we	13
left we do	6
left we finish	13
left we have				-11
left we need	-9	26
left we use	-16			48
left we want	-19	23
left we're		8	-13	-11
left what	19
left when	17
left where	11
left which	13
left why	12
left will	8
left with				7
left with the	-6	-11	17
left without		8
left won't	8
left wouldn't	7
left you	24	-6
left your	12
left1 &	-16			12
left1 '	10
left1 (			-11
left1 +	-16			5
left1 -	8
left1 /	29
left1 @	31
left1 a					11
left1 above	12
left1 across	17
left1 add				10
left1 again	7
left1 against	18
left1 all				27
left1 along	22
left1 already	14	-10	4	-6
left1 are	34
left1 around	31
left1 as	36
left1 ask	21	-5		-7
left1 at	23
left1 attic	19
left1 b	27
left1 back				-11		19
left1 bar	12
left1 bare	17
left1 basement	17
left1 bath	10
left1 bathroom	8
left1 bedroom	14
left1 before	21
left1 behind	17
left1 below	12
left1 bend	16
left1 beside	10
left1 between	26
left1 black				-5
left1 blow		-5		9
left1 box	21
left1 br	-6	-10		14
left1 break	-7	13
left1 bring		15
left1 burn	-6			22
left1 buy	-15	9		-4
left1 by	18
left1 c	15
left1 call	5
left1 can't	9
left1 caulk	14
left1 ceiling				12
left1 change	-5	8
left1 check	9
left1 choose	9
left1 clean	13
left1 clear	15
left1 clip	-26		8	7
left1 closet		-5	17
left1 come		-7	6
left1 count	-21	8	21	-26
left1 cover	17
left1 crack	4
left1 cut out	12
left1 dead	14
left1 dig	15
left1 dining room	12
left1 down				15
left1 drill	19
left1 drip	16
left1 drive	-10	-9		26
left1 drop	4
left1 eat	-6	-10		27
left1 em	-14	24		-7
left1 enough	12
left1 entry	12
left1 every	7
left1 exam	26
left1 except						18
left1 family room	4
left1 fifth	21			-6
left1 figure		19	-13	-22
left1 fill	20			-4
left1 first	-6	21	-13	-19
left1 fit		-8		13
left1 floor	5
left1 flush	23
left1 foam	-8	-13	-6	25
left1 forget	-7	16
left1 frame	7
left1 from	11
left1 get			14
left1 give	23
left1 glue	27
left1 go				8
left1 good		-15	18	-7
left1 gotta	4
left1 grab	-9	11			15
left1 grind	-6			13
left1 half	-23		27	-14
left1 hall	8
left1 hall bath			14
left1 hand		-6	13	-16
left1 hang				8
left1 have			5
left1 he	9
left1 here	-31	-19	36	-17
left1 him	5			-8
left1 hit	23
left1 hold	17
left1 how	15
left1 i	11
left1 i'm	11			-6
left1 i've	12	-10		-11
left1 if	10
left1 into	28
left1 it	9
left1 job	-9			13
left1 just	4
left1 kill	7
left1 land	16
left1 last		-5
left1 laundry	21	-4
left1 lay	-14			24
left1 lift	6
left1 little	4
left1 living room	18
left1 long	24			-12
left1 loose	26
left1 lose	25
left1 make	37	-7
left1 master	9
left1 master bath	12
left1 match	14
left1 maybe	-16		39
left1 me	-8	22
left1 measure	6
left1 meet	10
left1 miss		16
left1 mix		-11	-8	20
left1 move	22
left1 n	14
left1 near	16
left1 need		19
left1 new	-24	33	-7
left1 nick	8
left1 no	24	-17	-10
left1 nobody	8
left1 not	23
left1 notch	16
left1 off	13
left1 office	11
left1 old	26			-8
left1 on	6
left1 once	8
left1 one's	24
left1 only		-20	20
left1 open	5
left1 or		8
left1 order	-6	16			6
left1 out	12
left1 outta	33	-5
left1 over	30
left1 owe	-7	15
left1 pack		-6		11
left1 paint	24
left1 pantry	21
left1 pass				6
left1 past	26
left1 patch	26
left1 pick	10
left1 please		6
left1 plug	21
left1 point	22
left1 pop	11
left1 porch	12
left1 pour	-20		-8	29
left1 prime		-17		9
left1 push	7
left1 put				5
left1 quick	24
left1 rate	10
left1 read	18
left1 replace	-11			12
left1 rest	-44	-33	46	-33
left1 return		-19		-20		25
left1 right	-13	19
left1 ring	15
left1 rip	6
left1 roll	5
left1 round	11
left1 sand	-8	4	9
left1 say	23
left1 scrape	15
left1 scratch			12
left1 screw			-8	13
left1 scribe	28
left1 seal	13
left1 see	11
left1 send	-13	11				11
left1 set				17
left1 she	14
left1 shim	5
left1 short	-25	30		-16
left1 shut	10
left1 side		-5	-8	6
left1 sign	-13		22
left1 since	14
left1 sister	7	-9
left1 sit		6
left1 snap	12
left1 snug	11
left1 so	6
left1 spend	-25	-18	-23	33
left1 split	6
left1 stack	-10	-9		19
left1 stand		10
left1 stick	-10			13
left1 still	-8		28
left1 strip	22
left1 stuff	-15	16
left1 supply	22	-14		-11
left1 swap	-10			36
left1 t defect.	11
left1 t finish.	-22			21
left1 t fixture.	19
left1 t surface.	16
left1 t tool.		-8	23	-21
left1 t work.			13
left1 take	-17			14		11
left1 tape	9
left1 test	5
left1 than	18
left1 that			16
left1 that's	-12	6		13
left1 the wrong	14
left1 them				-5	14
left1 then	8
left1 there			6
left1 there's			23
left1 they're	26	-5		-7
left1 thing	-12	-9	21
left1 think			6
left1 those	8	-15	9
left1 through				35
left1 throw	-33	28		6
left1 tighten	20
left1 tile	-12	18
left1 till	14
left1 to	6
left1 too	22
left1 top		7
left1 touch	9
left1 toward	6
left1 trim	20
left1 try		-17	14	-11
left1 turn	24
left1 under	24
left1 until	18
left1 up					6
left1 us	-17	33
left1 use				33
left1 v buy.	-18	25			15
left1 v have.			5
left1 v measure.	8
left1 v need.		22
left1 v return.	-11	-28	-5			23
left1 v say.	11
left1 v see.	24
left1 v use.				33
left1 wall	18
left1 want		8
left1 wash	16
left1 way	5
left1 we	13
left1 we're		8	-13	-11
left1 what	19
left1 when	17
left1 where	11
left1 which	13
left1 why	12
left1 will	8
left1 with				7
left1 without		8
left1 won't	8
left1 wouldn't	7
left1 you	24	-6
left1 your	12
left2 (		-31	19	-5
left2 )	22	-13		-12
left2 -		14		-13
left2 /	-10	15
left2 1	18
left2 about	26			-16
left2 across	17
left2 after	6
left2 again	-10			28
left2 ain't	18
left2 air	15
left2 already	-7	-7	7			11
left2 am		-6	11	-8
left2 and	-5	17
left2 arrive	10	-13
left2 ask	7
left2 at	12		-11
left2 attic	-9			15
left2 away	23
left2 b	4
left2 bad	22	-17
left2 bag	-19	7		18
left2 bar			7
left2 bath	17
left2 bathroom	24	-16	-10	-17
left2 bay	18
left2 be	8			-7
left2 bead		-6		7
left2 behind	9
left2 bend	19		-9
left2 between	27
left2 big	10
left2 black	7	-18	10	-17
left2 block				15
left2 blow	17
left2 board				-9
left2 bolt	-11			21
left2 book	22
left2 bottom	29
left2 box	-6	13
left2 bracket		22	-6	-16
left2 break	10
left2 bring	-17	6
left2 burn				18
left2 buy		4			5
left2 call	5
left2 can	26
left2 can't	25
left2 cap	-21			27
left2 change	-23	-17		23
left2 check	15
left2 clean	25
left2 clear		6
left2 clip	19
left2 close				6
left2 closet	31
left2 coat				8
left2 code	24	-16
left2 come					9
left2 could		17		-32
left2 cover	28			-15
left2 crack	14
left2 cut			8
left2 day	5
left2 dead	14
left2 deep	6
left2 didn't	-10	12		-5
left2 ding	8
left2 dining room	27
left2 dog	14
left2 don't	36
left2 down			22	-7
left2 drain	11
left2 drill	15
left2 drip	19
left2 drop	21
left2 each	29	-23
left2 eat				9
left2 electrician	13
left2 em	39			-16
left2 end	4
left2 enough	-9	-11	19	-6
left2 every				11
left2 fill	-23	-11		37
left2 fine		-5		11
left2 finish				6
left2 first coat	-19			25
left2 flash	16
left2 flat	14	-12
left2 floor	28
left2 foam	-16			28
left2 forget	6
left2 frame	10
left2 front	15
left2 full	23
left2 garage	22			-6
left2 give				-8	14
left2 glue	-5			12
left2 go				16
left2 gonna		10		-9
left2 good	39
left2 gotta	6
left2 grab	9
left2 gray	7		-28
left2 grout	26	-19
left2 guy	25
left2 half	-11	-4	20	-7
left2 hall	-7			11
left2 hand	26
left2 hard	8	-18	-5	9
left2 has				5
left2 have			7
left2 he	10
left2 her	35	-12		-6
left2 here	16
left2 high	15
left2 hold						14
left2 hole	21
left2 holes				7
left2 homeowner	20
left2 hook	19
left2 house	30
left2 i'd	-8	27		-14
left2 i'm		22
left2 i've	-11		38
left2 if	21
left2 in	36
left2 inspector	24
left2 instead	21			-14
left2 it'll	-4	12
left2 it's	26
left2 just				13
left2 keep	12
left2 kit	-20			16
left2 kitchen	9
left2 knock	6
left2 ladder	25
left2 land	12
left2 last	-33	8	-11	31
left2 latch	7
left2 lay	-12	7
left2 leak	16
left2 leave			37
left2 let		-12		9
left2 let go	24		-11	-6
left2 level				10
left2 lid	-13	-10		24
left2 lift	13
left2 like	-22	-23	-11	33
left2 line	-13			21
left2 long		15
left2 look	6
left2 lose	-6			15
left2 lot	12	-19		-5		17
left2 luis	23
left2 make	-5	16
left2 mark.		6
left2 me			14	-9
left2 measure	19
left2 middle	12
left2 miss	-11	28
left2 more		12
left2 move	23			-14
left2 mrs	10
left2 mud	-18	17
left2 must	20			-9
left2 nail		-6		20
left2 need	-10	18
left2 never	36	-18
left2 new	-13			20
left2 no	33
left2 nobody	37
left2 nothing	24
left2 now				11
left2 number	-9			17
left2 of				-10
left2 off	16
left2 old	7
left2 only		-23	18
left2 open			6	-15
left2 order	-13	20
left2 out	11
left2 over			9
left2 owe	-23	22	-19	-22	16
left2 owner	29	-4
left2 pack	-19			27
left2 pantry	-7	-7	-12	19
left2 patch	14
left2 peel	17
left2 pick	-25	6		-16	39
left2 pipe	13
left2 place	-16			21
left2 plate		12
left2 plug	17
left2 plumber				7
left2 prime	12
left2 pull	26
left2 put	-8			35
left2 ready	18
left2 reveal	12
left2 right	15
left2 rise	18
left2 roof	18
left2 sand	25
left2 say		16
left2 scribe		5
left2 seal	-15			29
left2 second		-4		9
left2 second coat	-8		18
left2 see	-4			14
left2 send	-10	-15	4	-6		21
left2 set	33	-4
left2 she	9
left2 she's				-6
left2 sheath	17
left2 sheet	14
left2 shim	-16	-12	14	9
left2 shop	-13	-25	13	8
left2 short		15
left2 should	27
left2 shy				6
left2 side	37
left2 silicone		-19		-7	22
left2 size	13
left2 skim	9
left2 slab	20			-17
left2 slip	27	-9	-20	-21
left2 snake	15
left2 so				7
left2 soft	-30		18			20
left2 somebody	10
left2 somebody's	13
left2 sound	19	-6
left2 splice	25			-10
left2 stain	11
left2 stair	6
left2 stairs	23
left2 stand	13
left2 stay	-12	-17	29	-12
left2 still			10
left2 strike	-21	27
left2 strip	15
left2 swap				14
left2 t	9	-10	-4
left2 t defect.	8
left2 t fixture.	16
left2 t role.	10
left2 t tool.	23
left2 t work.	14
left2 take				-12		17
left2 tear	13
left2 tell	19
left2 tenant	13
left2 test	19			-5
left2 that				9
left2 that's	5	-5		5
left2 the lady	-10	16
left2 them	18
left2 there's	-4	-8	37	-26
left2 they're	22
left2 this				9
left2 those		7
left2 through	21
left2 tight	27			-17
left2 tile	28
left2 till	24
left2 too	23
left2 top	7
left2 trim	10		-11
left2 truck	22
left2 try		13
left2 turn	16
left2 under	16
left2 underneath	14
left2 unit	-9	-8		-4		23
left2 up	10
left2 upstairs	22
left2 use	-32			55
left2 v buy.		11
left2 v have.			7
left2 v need.	-7	8	9
left2 v use.	-32			55
left2 wait		8
left2 walk	13
left2 wall			4
left2 walls	28		-22
left2 want	17
left2 water	19
left2 way	-6			14
left2 we'll	-32	38
left2 we're			6	-30
left2 where	10
left2 which	13
left2 white	-22		28	-14
left2 whoever	14
left2 wide	22
left2 will		25
left2 wire	19
left2 with				9
left2 wobble	9
left2 won't		10
left2 work	12
left2 would	-11	15
left2 wrap			9	-6
left2 wrong	24
left2 you	33
left3 )	15
left3 +	17
left3 -	10
left3 N	26	-5
left3 after	17
left3 again	-8			17
left3 all	-8			5
left3 already	-16			5	18
left3 an		7
left3 and	-18	14
left3 another			-19	5
left3 any	-20	22
left3 are	-18			35
left3 around	-8	14
left3 back	-35			18		22
left3 bathroom	5
left3 be	12
left3 before	21	-10
left3 behind	21	-8
left3 between	9
left3 big	12		-10
left3 black		8
left3 blow	-12	18
left3 board	-32	25	8	-7
left3 both	29			-23
left3 bottom				6
left3 box	17
left3 bracket	32	-24		-5
left3 break	19	-4
left3 bring	8
left3 buy	7	-16			10
left3 by				-6
left3 call	11
left3 can't	-19			23
left3 caulk	-27	12	23	-14
left3 ceiling	12
left3 clamp	7
left3 clean				11
left3 clear	7
left3 coat		9
left3 corner	-11					23
left3 day	31		-5
left3 dent	17
left3 down		-6	7
left3 drain			-4	6
left3 drill	19
left3 drip	-5			14
left3 drop	8
left3 dry	11
left3 dump	12
left3 each	17	-23	-8	7
left3 electrician	36	-16
left3 em	40	-13
left3 end	-7	-9		16
left3 every				7
left3 falls	9
left3 fill	-7			16
left3 find	10
left3 finish	-22	-8		30
left3 first	-17			21
left3 fix	8	-16
left3 flat	19
left3 float	-10		-14	17
left3 floor	-6			12
left3 for				-19
left3 fre	14
left3 from	16	-18	-9	-13	20
left3 front	-5	-15		13
left3 garage	20
left3 get	7
left3 give		-14	-17	15
left3 glue	46	-23		-9
left3 gonna		14	-10	-11
left3 good	-9	15
left3 gotta	19
left3 hall	32
left3 hand	21
left3 hang	6
left3 have	8
left3 he		-5			17
left3 he's	8
left3 head		6
left3 her	34
left3 his	16
left3 hit				9
left3 holes	28			-8
left3 hook	-13	-7	12	10
left3 hot	21
left3 house	-11	-12	-5	27
left3 i'll	15
left3 i'm			5
left3 i've	-17		17
left3 if	23
left3 inch		10
left3 into	-25	21	-5
left3 it	6
left3 it's	19
left3 its	-6	13	-5
left3 joint	-14	5	9
left3 just	-15	-13	9	14
left3 keep	19
left3 kitchen	29
left3 last	-22			23
left3 leave			22	-8
left3 let	19
left3 lid	35	-29
left3 like	22
left3 line	8
left3 living room	15
left3 long	-10	16
left3 loose				10
left3 make	4			-5
left3 maybe	-14		20
left3 me		9		-6
left3 measure		8
left3 miss	27	-7
left3 more		9		-6
left3 move	7
left3 must		12		-7
left3 my	40
left3 nail	7
left3 new		-5		17
left3 nobody	27
left3 nothing		13
left3 number	27			-9
left3 nursery	-27	-22	-15	33
left3 off	29
left3 office	14
left3 old	13
left3 ones	18	-8
left3 only	30
left3 open	15
left3 order				-5
left3 out	14			-14
left3 outside	29	-8
left3 owner		13
left3 pack		14
left3 paint		-7	11
left3 painter	13			-10
left3 patch	6
left3 pick		19
left3 plumber	7
left3 pull	29
left3 read	14
left3 replace				15
left3 right	26
left3 rod	26			-12
left3 roll	-18		23
left3 run	21
left3 sand	19
left3 say		-13	10
left3 screw	-5	15
left3 second floor	11
left3 see	7
left3 send	-14	18				6
left3 she	8			-6
left3 she's	32
left3 shim	19			-12
left3 shop	-22	32	-16	-21
left3 short	-16	21
left3 side				7
left3 sister	-17	14
left3 sit	12
left3 so	-26	33	-13
left3 somebody	-13	18		-9
left3 somebody's	13
left3 still	-8	5			13
left3 stop	6
left3 supposed		17
left3 swap		5
left3 swing		14		-10
left3 take			4
left3 tape	43	-12		-17
left3 that's		7	-5
left3 the lady	-9	-16	23
left3 their	-5		18
left3 them		-21	16	-5
left3 then	21		-6
left3 there			9	-5
left3 there's	33
left3 they	13	-24	13
left3 they're	23
left3 think			-10
left3 those				15
left3 through	4		-6
left3 throw	8
left3 tie		-16		10
left3 too	8	4	-6	-19
left3 top	11	-17		6
left3 truck	18
left3 turn	9
left3 under				11
left3 us	-6	15
left3 use	28			-15
left3 wait	5
left3 wall	8
left3 walls	7
left3 want	11
left3 water	24
left3 we're			10	-4
left3 weight	32	-16	-14	-13
left3 were	23
left3 what	9
left3 what's		6
left3 where	10
left3 which	9
left3 white		15		-19
left3 whole	28
left3 wire		-10	-6	11
left3 within	18
left3 won't	20
left3 wrap	-11			5
left3 x	-5	21		-10
length after have far	-30	31	-9
length after have here	27	-4	-14	-7
length after need far	-8	-30	16
length after need here	8
length after need sentence		26	-25	-32
length after none far		11		-19
length after none sentence		5
length after used sentence	-32		17
length beside figure	-12	19		-5
length beside get	-33	6	30	-10
length beside is	10
length beside like		6
length beside need		24
length beside need b nobody		22
length beside need b person	-10	27
length beside nothing	-7
length beside other b nobody		14	-5
length beside other b person	-32	26	-21	12
length beside other p other		-12	19	-15
length beside other p person	-16		22
length beside other pp other	12
length beside run		-10	-9	9
length beside snake	22			-8
length beside undefined is other	15	-7
length beside use	-25			34
length beside use pp nobody	-16			25
length beside want	-14	25		-8
length beside work b nobody	18	-5
length beside work b other		13	-6	-6
length beside work pp nobody	13	-9	-9
length beside work pp other	35	-15		-24
length beside work pp person	-26	-11	-5	36
length beside work s other				12
length buy imperative behind	7			-5
length cue ate	-10			15
length cue back	24			-15
length cue came	7
length cue have	-33		63	-30
length cue lacks	25
length cue need		40		-10
length cue used	-6			30
length have present behind	-12	-22	30	-9
length kept	-31	8	30	-23
length left #	-19	6		19
length left about	-11		7
length left and	-15	33
length left at	33			-8
length left by	8
length left every	36	-14	-6	-26
length left figure	-12	19		-5
length left for	23	-5		-5
length left get	-30	6	23	-12
length left in	7	-19
length left is				12
length left it		-7		16
length left it's	30
length left need	-37	56
length left of	21	-23			10
length left over	27
length left run	-10	-11	-7	19
length left the	34	-21
length left up	-20		-5	19
length more	-5	12	-5
length name flawed	-19	17	13	-6
length named before fixture	22
length named before surface	-16	-6		28
length named before word	12	-11		5
length named here finish	-16		10	7
length named here material	-32	50
length named here part	-19	21
length named here surface	-28	5	7	11
length named here word		24	-8
length need modal behind	-16	28	-7
length need owed behind		12
length not ahead		5	-10	-11
length null copula behind	14
length null none no	-5			5
length other copula behind	12	-5
length other imperative behind		23	-5
length other modal behind	-20	17		5
length other past behind	-15	-16	32	-15
length pointing	-23	-10	34
length right Q	41	-27		-20
length right across	16
length right and		12
length right down	23
length right from	29	-19	-6
length right leave	-37	-9	45	-14
length right of	-26	-15	21	17
length right on				-7
length right short		11
length right to		12
length right up		-31	-11	19
length right with	15	-19
length says copula before	-31	17	8
length says copula behind	15	-7
length says copula behind not	8	4		-12
length says imperative behind	12			-5
length says modal behind	-9	25
length says none no	-5			5
length says owed behind		17
length says past before	-27	-29		31
length says past behind	-6	-22		18
length says present behind	-25	8	11
length sized	-83	33		41
length sold so true	-10	23
length then move pp	-18	-12	39	-17
length then work b	-17	20
length then work pp	-24	5		19
length use past behind				20
length verb be behind	12	-5
length verb get behind	-36	13	30	-6
length verb have behind	-12	-22	30	-9
length verb need behind		16
length verb null behind	14
length verb null no	-5			5
length verb pull behind	-21			26
length verb put behind	-37		-8	39
length verb run behind		-17	-18	12
length verb use behind				20
length verb want behind	-16	24
length whole clause	-13	17	-15	9
length work imperative behind	29	-13		-5
length work past behind	-5	-25		27
list have	-27		51	-52
list need	-19	60	-41	-54
list used	-21	-43	-36	51
many	55	-17
marked	-18	43
meant back 1	-10
meant back 5		-13		-7
meant back 6	8	4	-6	-13
meant back 7	19	-11
meant back 8	64	-23	-37	-35
meant before more	-7	9	10	-23
meant before new	-4
meant before no		17
meant flawed false	40
meant flawed true		10
meant place -		23	-18	-38
meant ran out	-16	36		-22
more		44		-8
named before area				15
named before surface	15
named before tool	-10		14
named before work	-7	-12			11
named here defect	19
named here role		9
named here surface	14
named here work	25
nameless	57
next copula other comma	27	-17		-19
next copula same comma	15
next copula same stop	23
next cue ate other		22		-21
next cue bought other	-13	6				18
next cue bought same		-10
next cue came other	10	-12
next imperative same run-on	4
next imperative same stop	22
next modal same stop	17
next none other comma	-36	31	-6	11
next none same run-on	48
next none same stop	19
next none same word	20
next past same and				32
next past same stop	41
next past same word	7
next present same comma	7
next present same stop	36
next present same word	15
next undefined # undefined		11
next use buy imperative other		-4		5
next use buy imperative same	-21	45
next use buy modal other	31			-12
next use buy modal same	-8	24
next use buy owed same	-37	30	15	-6
next use buy past other	36	-19
next use buy past same		-7			15
next use buy present same				-35
next use have imperative same	43	-18	-5	-26
next use have owed same	-13			10
next use have present other				5
next use measure modal other			12
next use measure modal same		-11
next use measure owed other	-11	22		-15
next use measure past other		-18		12
next use measure past same	33
next use measure present same	4
next use move imperative other			9
next use move imperative same	18
next use move owed same				-6		12
next use move past other	15
next use move past same		-10		14
next use move present other		18		-5
next use need modal other	22			-8
next use need owed other		-4
next use need past other	-21	-30	31
next use need past same			21
next use need present same				-12
next use null imperative other	-4	9
next use null imperative same			14	-15
next use null modal other	6		-4	-17
next use null owed same	16
next use null present same		-28	5	6
next use other modal other					5
next use other owed other	-4	19
next use return past other	17
next use return past same	-37	-6		-7		40
next use return present same	21
next use say imperative other	23			-5
next use say modal other		-9	16
next use say modal same	18
next use say owed same					4
next use say past other				12
next use say past same	32
next use say present other	5	13	-17	-10
next use see imperative other		-4
next use see imperative same	15
next use see modal other	8
next use see present other	7
next use see present same	25
next use use imperative same	-9	-21		16
next use use modal same			10	-30
next use use past other	8
next use use present other	20
next use use present same				9
next use work modal other	4
next use work owed same	24
next use work past other	22
next use work present other	12
next verb add same	37			-13
next verb adjust same	12
next verb anchor same		7
next verb arrive other	12	-10			9
next verb ask other	9
next verb auger same	19			-11
next verb back same	23
next verb bed same	-19			24
next verb believe same	-14		20	-5
next verb bend other	11
next verb bet same	7
next verb bin same	15	-6
next verb blow same	31		-14
next verb bolt same	-38	-20		46
next verb book same	8
next verb borrow same	-9	12		-9
next verb box same	15			-5
next verb break same	8
next verb bring other	25	-29
next verb bring same		5
next verb burn same	5
next verb buy other	21	-23	11	-10
next verb buy same	16			-7
next verb buzz same	35			-14
next verb call other	11			-8
next verb can same	-21		15
next verb can't same	6
next verb cap same	36	-7		-12
next verb catch same	20
next verb caulk same	5
next verb change other	29		-5
next verb change same		-14			18
next verb choose same		11
next verb chuck same	24	-10
next verb clamp same	31			-11
next verb clean other	29			-8
next verb clean same	24
next verb clip other	19	-6		-7
next verb close same	-5	9
next verb coat same				9
next verb come other		25		-19
next verb complete other		13	-21	-8
next verb consum other		-12	17	-16
next verb correct other	14
next verb count same	5	-26	27	-31
next verb crack other			7	-13
next verb crack same	24
next verb crosse other	11
next verb cut other	27
next verb cut out same	28			-14
next verb cut same	5
next verb dig same	23			-5
next verb do other	-11		-21	22	13
next verb don't same		5		-15
next verb drain same			-8	16
next verb draw same	27
next verb drill other	9	-8
next verb drill same	25
next verb drip other	-13	-14		32
next verb drip same	-9	23
next verb drive same				12
next verb drop other	26			-10
next verb drop same	18
next verb dry other	-5		-24	15
next verb ease same	5
next verb eat same	18
next verb either same	24			-15
next verb empty same	-26	-18	-24	-12	35
next verb exchange same	17
next verb feather same	28
next verb feel same	11
next verb figure same	35	-18
next verb file same	26
next verb find other	9	-18	-9	7
next verb find same	38			-4
next verb finish other		-11
next verb finish same	10
next verb fish same	11
next verb fit other	19
next verb fit same	-12			10	5
next verb flash same	5
next verb flip same	12
next verb float same	18
next verb forget same	-16				14
next verb frame same	19
next verb fre same	15
next verb get other	34			-25
next verb give same		-35		-26		38
next verb glue other	35	-9		-22
next verb go other	-7	41		-10
next verb gotta same	8
next verb grab other	19
next verb grab same	-20	36
next verb grease same	16
next verb grind same	13
next verb guess same	27	-11
next verb hang other		5
next verb has same	15
next verb head same	20	-26		6
next verb hit other	15			-10
next verb hold other	12	-22		11
next verb hold same	34
next verb hum other	19			-10
next verb hum same		9		-13
next verb i'd same	19	-13		-5
next verb i'll same	15
next verb jack same	5
next verb jam same	22
next verb keep other	22
next verb keep same		5
next verb kick same	17
next verb know same	31
next verb land other	8
next verb land same	13
next verb laugh same	9
next verb lay other	-15	-20	-13	28
next verb lay same	7			-16
next verb leak other	15
next verb leak same	5
next verb lean same	-13	6	-8	8
next verb leave other	24	-15
next verb leave same			20
next verb let same	12
next verb lift other		-18		11
next verb lift same				-6
next verb like other	-16	20		-14
next verb lit same				10
next verb lock other			12
next verb look other	20
next verb lose same	6
next verb make other	25
next verb make same	32
next verb mark same	29			-19
next verb measure same	14
next verb mention same	18			-4
next verb miss other				5
next verb miss same	16
next verb mount same	-33	24		18
next verb mud same	32			-20
next verb must same	29
next verb nail same				9
next verb need other		-6
next verb notch same	18
next verb notice same	14
next verb open other	15
next verb order other		-27	6	8
next verb order same	-24	35		-30	7
next verb owe other	-6	18
next verb own same	14
next verb pack same	6
next verb paint same			21	-31
next verb pass other	32
next verb pass same				13
next verb patch other				9
next verb patch same	38
next verb pick other	26
next verb pin same	31		-23
next verb pitch same		-19		9
next verb plane same	26
next verb plug other	10
next verb plug same				11
next verb plumb same	-8			14
next verb point same	21		-16
next verb pop same		17
next verb pour same				-8
next verb prime other	-25	-9		31
next verb promise same	26
next verb pull same	33
next verb pump same	21
next verb purge other	18
next verb push same	18
next verb put other	15			-7
next verb rake same	-16	-18	32
next verb rate same	22
next verb reach same	19
next verb read same	28			-10
next verb receive other		13
next verb recheck other		-13		15
next verb recut same	20
next verb refasten same	5
next verb refix same	34			-22
next verb refuse same	-21			-8		32
next verb reglue other	21			-4
next verb reglue same		7
next verb rehang same	18	-17
next verb reorder same	-34	34
next verb replace other	16
next verb replace same	-17			26
next verb require other	-38	-23	30	13	-19
next verb require same	-18		22	-10
next verb reroute same	30			-6
next verb reseat same	20
next verb reset same	17
next verb return other		-4	19	-20
next verb return same	-30					38
next verb ring same	8
next verb run other				8
next verb run same	22
next verb rust same	-9	-28	7	12
next verb sand same	16
next verb save same	22	-6
next verb say other		25		-10
next verb say same	20
next verb screw same				12
next verb scribe other	13
next verb scribe same	15
next verb seat same	4
next verb see other	29
next verb see same	7
next verb seize other	7
next verb send other		-6		16
next verb send same	-7			-21		17
next verb set other			12
next verb shave same	20			-7
next verb shim same	26
next verb short same	-19		-22		22
next verb should same	-8	26		-19
next verb show other	7	5		-12
next verb shut same	13			-7
next verb sign same	25
next verb silicone same	-8			16
next verb sister same	37
next verb sit other				18
next verb size same	-12	7		6
next verb skim same	26
next verb slap same	-17	16
next verb sleeve same				4
next verb slip same	7
next verb smell same	10
next verb snap same	-5	-5		17
next verb snug same	28
next verb solder same	6
next verb sort same	27			-13
next verb sound same	23			-14
next verb spin same	16
next verb split same	22
next verb spray same	-17	-8	23	-12
next verb stack same	20
next verb stain same	27
next verb stand same		8
next verb staple same	21			-11
next verb start same	6
next verb stay same	9		26	-33
next verb step same	6
next verb straighten other	16
next verb straighten same	6
next verb strap same	-9			13
next verb stretch same	15
next verb strip other	-6	-30		22
next verb strip same				10
next verb stuff other	8
next verb stuff same	8			-5
next verb supposed same	5
next verb swap other			14
next verb swear same		-6		8
next verb swing same	-18			17
next verb tag same	10
next verb take other	-17	4	8	-29	9
next verb tap same	23		-7
next verb tell other		-6
next verb text same		11
next verb that'll same		-9			11
next verb think other	6
next verb throw same	7
next verb tie same	13
next verb tighten same				5
next verb top same		-11	7
next verb torque same				5
next verb touch other	-6	13
next verb touch same	34	-18
next verb trim same	10
next verb trip same	43			-23
next verb try same	36
next verb tuck same	6
next verb turn same	36			-11
next verb use other	10
next verb wait other		7		-8
next verb wait same		6
next verb walk same	-23					9
next verb want other	-4		16
next verb wash same	14
next verb weep other				9
next verb weep same	17
next verb will same		21		-6
next verb wipe same				6
next verb wire other		8
next verb wire same	-6			23
next verb won't same	22
next verb work same	4
next verb would same	12
next verb wouldn't same	23			-9
next verb wrap same	7	7		-12
next verb wrote same	-20	24
next verb yank same	-5			10
next verb zip same		4
one after bought sentence	-25	17	-16	-25	20
one after have far		8
one after have here	31	-17
one after have sentence		6
one after need far	-7			6		9
one after need here	-11	33
one after need sentence	-11	4
one after none far	-15
one after none here	39
one after none sentence		4
one after used far				-10	10
one after used here		-22		17
one beside add	-5	6
one beside ask		7
one beside be			13
one beside bring		8
one beside buy	-13	-7		-18		18
one beside buy b nobody	-11	25
one beside buy b other	-20	28
one beside come		5
one beside cut	6	-35		11
one beside do	-11	19
one beside drip	7	-7
one beside eat				7
one beside find	24			-14
one beside get	-7
one beside glue	-10			16
one beside grab	-21	28
one beside hang	6
one beside has				-6		10
one beside have b nobody	14	-11		-10
one beside have b other		6
one beside have pp other	24
one beside have pp person	-5		-4	18
one beside hit	21
one beside hold	17
one beside is	4			-7
one beside leave	9
one beside like	8
one beside lose	15
one beside make	28
one beside measure bpp other	19
one beside measure i other	10
one beside measure p other	40
one beside measure pp person	-7	17
one beside measure s other	23
one beside miss		9
one beside move b other	8			-11
one beside move b person	13
one beside move pp other		-6	5
one beside move pp person				7
one beside need		11
one beside need b nobody	-41	39		-4
one beside need b other	15
one beside need b person		15
one beside need s other	-6	17
one beside need s person	5
one beside order	-14	10		-9	15
one beside other b nobody	-6	26
one beside other b other		14		-14
one beside other b person					4
one beside other i other	-7	20
one beside other i person	14			-7
one beside other p other	6	-27
one beside other p person	-19		31
one beside other pp nobody	20	-6
one beside other pp other	-7	16		-15
one beside other pp person			8
one beside other s other	20			-12
one beside owe	-24	17	-5	-14	16
one beside pick	13	-7
one beside pull	6
one beside push	7
one beside put	-14			28
one beside rip	4
one beside say	27	-7
one beside scrape	6
one beside see	29	-8
one beside send	-16	28
one beside set		-9
one beside sister	-15			23
one beside sit	24
one beside stick	-7			8
one beside swap	-41	8		34
one beside take	8	8		-16
one beside throw		9
one beside try		-17	15	-12
one beside undefined has other				-6		11
one beside undefined is other	6			-9
one beside use	8
one beside use pp nobody				13
one beside use pp person	16			-10
one beside want		9
one beside work b nobody	18			-29
one beside work b person	13
one beside work bpp nobody				24
one beside work bpp other	9
one beside work bpp person	-11			27
one beside work i other	32
one beside work i person		21		-25
one beside work p person	10
one beside work pp nobody	-12	-18		37
one beside work pp other				15
one beside work pp person		-5		14
one beside work s other	28
one buy imperative behind		16
one buy past behind	-50	-28		-26	31	17
one cue bought	-45				26	14
one cue came	-31	7	7		20
one cue have	-9
one cue need	-4	46
one cue used				13
one false	-7
one kept	-36	16	13
one left #	-16	13		9
one left +	-11	12		5
one left G	7
one left about	38
one left add	-5	6
one left and	-25	23		10
one left as	37
one left at				6
one left be	-7	4	13	-10
one left bring		17
one left buy	-13	-7		-18		18
one left by	26	-15
one left cut		-20		16
one left down	7	-22	-9	4
one left for		16
one left from				8
one left get	-5
one left glue				6
one left grab	-6	11
one left has	-8					12
one left hit	20
one left in				4
one left is	5	-22		-12
one left it's	-5	27	-10	-7
one left just	-7	16		-7
one left leave	13
one left like	16
one left make	16
one left me		22
one left miss		9		-6
one left need		19
one left not	19
one left off	30
one left on	8
one left order	-5			-6	17
one left over	20
one left push	7
one left put				12
one left rip	4
one left run	4	5		-4
one left send		18
one left set	-5	-9		16
one left sister	-13			21
one left stick	-12	5		11
one left take		15		-12
one left that's	11	5		-34
one left the	4	12		-23
one left them		-44	-9	-15	23
one left there's	38			-4
one left to	35			-16
one left try	-5	-16	19	-12
one left up	9
one left use	-11	-8		32
one left want		6
one left with				5
one measure modal behind	-31	35		-15
one measure present behind	26
one more				-6
one move owed behind	-11	-7	-16	-22	23
one move past behind	6
one move present behind	18
one named before area	-8	13
one named before material	-15	19
one named before part	-48	13		24	10
one named before surface	34	-8
one named before tool	-27	13	15
one named before word	21
one named here defect	34
one named here finish	-31	41		-20
one named here fixture		4
one named here material	-14			7
one named here part	-59	20		29
one named here surface	38			-7
one named here tool		16		-19
one named here word	30
one need owed behind		23
one not ahead	34
one null copula before		19	-8	-21
one null modal behind	-11	23	-6	-8
one null none no	-13	6		8
one other copula before	-14	11			4
one other imperative behind	-6	19
one other modal behind		19
one other owed behind		13		-10
one other past before		12		-29
one other past behind			19
one other present behind					9
one right Q		-9		14
one right T	-4			-16
one right a	-29	35
one right about	24
one right all				5
one right and	-44	41
one right are	-26	17	-5	14
one right at			9	-4
one right before	6			-14
one right behind	-10	-22	17
one right for	12	-9
one right get	-9	24	-13	-23
one right go	8	-7
one right has	22	-6
one right in	-5			17
one right is	-5	13
one right leave	15	-7		-8
one right no	56	-42		-29
one right now	11	-9
one right of				14
one right or	22	-15
one right out	-13	8		10
one right over		-30		25
one right right	17
one right that	7			-4
one right the	-20	17			8
one right there	10			-17
one right through	32
one right to	30	-7
one right too	-20	30		-17
one right under				17
one right up	12	-26
one right when	-5	19
one right with	29			-9
one say imperative behind	21
one say present behind		17
one says copula before	-18	26	-5
one says copula behind not	33
one says imperative behind		15
one says imperative behind not	-5	-8		10
one says modal before	-5	13		-8
one says modal behind		32
one says modal behind not		13
one says none no	-14			14
one says none no not		5		-10
one says owed before	16
one says owed behind		20
one says owed behind not		-8			16
one says past before	-11	9	-26	15
one says past behind				13
one says past behind not		-11		13
one says present before					5
one says present behind not	34	-9		-20
one sized	-37	29		5
one then move b	-6	17		-25
one then move p	13
one then move pp	26	-19
one then move s	-10	17		-11
one then other b	5
one then other i	-28	22		16
one then other p				-23
one then other s	36	-15		-6
one then undefined has	16
one then undefined is	-11	12
one then undefined will	-7	4		-11	16
one then work b		8
one then work i	-11	-8	-7	21
one then work pp		-26		42
one then work s		13		-4
one true		45
one verb add behind	-16	15		5
one verb ask behind	15
one verb be before	-14	11			4
one verb bring behind		17
one verb buy behind	-14	-7		-15	4	17
one verb come behind	-11	22		-12
one verb cut behind	5	-24		9
one verb do behind	-5		19	-14
one verb find behind	32			-19
one verb get before	-4	21		-25
one verb get behind	-12		11
one verb give behind		5
one verb glue behind	-8			7
one verb go behind		-9		-27	20
one verb grab behind	-15	24
one verb hang behind	-5			11
one verb hit behind	16
one verb leave behind	11
one verb like behind	-9	17
one verb lose behind	15
one verb make behind	25
one verb need behind		8
one verb null before		19	-8	-21
one verb null no	-13	6		8
one verb order behind		-10		-7	22
one verb owe behind	-23	8		-5	19
one verb pick behind	8
one verb pour behind	24			-9
one verb pull behind	6
one verb push behind	7
one verb put behind	-10			25
one verb rip behind	4
one verb run behind	13			-8
one verb say behind	7
one verb scrape behind	6
one verb see behind	28	-10
one verb send behind		8		-6
one verb set behind		-9
one verb sister behind	-15			23
one verb sit behind	18
one verb stick behind	-8			9
one verb swap behind	-31	18		18
one verb take behind	20			-16
one verb throw behind		9
one verb try behind		-17	15	-12
one verb use behind	8
one verb want behind		16
one work imperative behind	-7			10
one work modal behind		16		-19
one work owed behind	25
one work past before	-27	5		31
one work past behind				36
one work present behind	11
opens &	19
opens +	5
opens alright	7
opens anyway	9
opens anyways	8
opens because	36
opens boss	18
opens but	4
opens cause	18
opens clause area	-19	-9	-11	39
opens clause count	-27			16
opens clause length	-19	6		19
opens clause one	-16	13		9
opens clause pack	-29
opens clause volume	-34	9	7
opens clause weight	-30	8	-5	28
opens hi	15
opens like	13
opens man	10
opens now	25
opens oh	21
opens ok	36	-4		-22
opens please		28
opens plus		26	-25
opens right	6
opens then	19
opens well	5
pack after bought here		-37	-30	-30	40
pack after bought sentence	-24	-29	-31	-36	48
pack after have far	-17		21	-12
pack after have here	36		-4	-44
pack after have sentence		16		-8
pack after need far		11	9	-37
pack after need here		38
pack after need sentence		39		-49
pack after none far	-34	5	5
pack after none here	-27	32
pack after used here	-13	-5		29
pack after used sentence	-34			19
pack bag	24	5	-11	-33
pack beside bring		10
pack beside burn				27
pack beside buy	-29		-5	-14	24
pack beside buy b person	-39	8	-11	-10	20
pack beside call	-6	8	-24	5
pack beside come	-24	-39			33
pack beside do	-34	4	-20	25
pack beside eat	-12		-5	22
pack beside fill		-6		12
pack beside get			7	-7
pack beside go				21
pack beside grab	-28	32
pack beside hang	-19	-10	5	15
pack beside have	-12	-9	38
pack beside have b nobody	-14		31	-5
pack beside have b person			35
pack beside have pp person	33	-16	-23	-24
pack beside is	-10		12
pack beside leave	4	-15	16	-21
pack beside miss	-9	16
pack beside move b other	18	-18		-22
pack beside move p nobody	-5			27
pack beside move p other		-20	-7	28
pack beside move p person	-6			22
pack beside move pp other	13	-25	12	-13
pack beside move pp person	-10	-10	24	-18
pack beside need		9
pack beside need b nobody		28
pack beside need b other		26		-6
pack beside nothing	-37
pack beside open	-15	-25	13	12
pack beside order	22	-14
pack beside other b nobody		29
pack beside other b other	-21	35	-9
pack beside other b person	6		-24	7
pack beside other i other	-16	31	-17	-21	-12
pack beside other p nobody	-17	-39			14
pack beside other p other	-11	-41		53
pack beside other p person		-15	47	-24
pack beside other pp nobody	-25	-35	18	-22	28
pack beside pick	-13	19	-9	-14	5
pack beside put	-19	6
pack beside run		-23	-6	23
pack beside set			-11	13
pack beside take	-46			26
pack beside undefined is other			6
pack beside use				23
pack beside use b person	-6			8
pack beside use pp other	-18			28
pack beside use pp person				52
pack beside want		28
pack beside work b nobody	-11	-8	13	5
pack beside work b other	-5	15
pack beside work b person		-46	19	5
pack beside work bpp nobody	-46	18	-30	12
pack beside work bpp person		-50		7
pack beside work i other	9	-20	-18	4
pack beside work pp nobody			-17	11
pack beside work pp other	-15		-31	31
pack beside work pp person	-10	-36		49
pack box	21	15	-21	-30
pack bucket	-8		20	-41
pack buy imperative behind		6
pack buy modal behind	-29	40
pack can	-15	17	8	-12
pack carton	-12		16	-23
pack cartridge	4	-6	-11	5
pack coil	23	-11
pack cue ate	-24			55
pack cue back	-18				16
pack cue bought	-37	-26	-40		53
pack cue came	-16	-24	45	-13
pack cue have		-6	62	-5
pack cue lacks		44	-25
pack cue need		68
pack cue used				21
pack drum	15	-12	-14
pack flat	53	-29	-24	-25
pack have present before			-28	-18	18
pack have present behind	-24		39
pack kept	-15	-8	34
pack left #	-29
pack left G	-35	-30	-21	47	11
pack left Q	-32	49		-44
pack left T	-48	-42		9	29
pack left a	-7	-6	-23	-17	22
pack left about				7
pack left and	-8	41
pack left be	-13	10	-30	15
pack left bring	-11	8	9	-8
pack left buy	-18	23		-7
pack left from	13	7	-29	-24
pack left get	-51		41	-25
pack left go	-13	-17	-14	34
pack left grab	-18	15			9
pack left have	-5		18
pack left in	17			-14
pack left is	-10	28	6	-33
pack left it	-35	40	-17	-24
pack left last		-18	22	-12
pack left leave		-29	30	-26
pack left me		10
pack left of	7	-39	12	-7
pack left on	11	-36	-31	12
pack left order	13	-6
pack left over	22	-21
pack left put	-5	5	-12
pack left short	-13	31	-20	-7
pack left take	-34			27
pack left that's	-24	-23	-46	48
pack left the		-45	14
pack left there's		-30	25	-26
pack left through				38
pack left to	-7	-26		12
pack left up		11	-11
pack left use				8
pack left want	-24	43	-4
pack left with	-17	-6	-38	40
pack length	16		-9	-15
pack list have	-36	5	22	-43	-16	-9
pack list need	-21	49	-33	-30
pack more		41	-17	-31
pack move past before	-13		39
pack move past behind				6
pack move present behind		-5	21	-22
pack name flawed		15
pack named before area	-19	-46	-8	26		14
pack named before fixture				12
pack named before part	20			-13
pack named before surface	8	-26	7
pack named here fixture	-15		11
pack named here material	-46
pack named here part				-54	8	14
pack named here surface	-8	14	7	-20
pack named here word	-49
pack need modal behind	9	-15	15
pack need owed behind		26
pack need past before	-32	41	-23	-25
pack need present behind	-24	34		-6
pack not ahead	-41	45		-16
pack null copula before	-5	29	-43
pack null copula behind	-31	7	16
pack null imperative behind	-14	26
pack null none no	-33
pack other copula before		-16	11
pack other copula behind	-22			25
pack other imperative behind		26
pack other modal behind	-8	32	-12	-25
pack other past behind		-21	16
pack other present behind	4	-8		4
pack pair	24	-5	-19	-10
pack pointing	-6	7	-12			8
pack right #	-27
pack right +				12
pack right Q	-27			10
pack right T	-46	33	11
pack right and	-45	13
pack right are	-12	-24	29	-26
pack right be	8	-15	-14	5
pack right by	5	-5	-17	-18	16
pack right for	-8	8	5
pack right from		12	-5	-42	19
pack right go	-34	-21	-37	47
pack right have	16		-20	-14
pack right in		-12	34
pack right is			6
pack right leave			55
pack right more			-12
pack right no	35	-31	12	-25
pack right of	-17	16		11
pack right on			36	-43
pack right out	28	-18		-22
pack right over	-25	-28	27	-46		22
pack right short	-34	43	-7	-7
pack right sit	6	5	-8	-8
pack right the	-44	30		5
pack right to	-30	22		-19		7
pack right under	9	-18
pack right up	16	-41	-22	19
pack right use				23
pack right where		-18	-16	15
pack roll	-11	33	-24	-26
pack say imperative behind	-17	21	-32	4
pack say present behind	11		-7	-13
pack says copula behind	-30		16
pack says copula behind not	-23	36	-22	-27
pack says imperative behind	-13	43
pack says imperative behind not	5
pack says modal before	-11	15	8	-24
pack says modal behind		29
pack says modal behind not	-5	-27	31
pack says none no	-28
pack says none no not	-22	38	-24	-28
pack says owed behind		44
pack says owed behind not			5
pack says past before	-9
pack says past behind				20
pack says past behind not	-13			9
pack says present before			-26	-13	10
pack says present behind	-24		12	7
pack says present behind not	25	-9		-4
pack set	21		-28	-34
pack sheet	36		-21	-34
pack sized	-22	4
pack sold so false	-34
pack sold so true	-41			8
pack stick	22	-17		-23		14
pack strip	-4			5
pack then have b	9		-6	-15
pack then measure i	11	-21		-16
pack then move p	-35	-20	-34	49
pack then move pp			30
pack then need pp	-31	39	-18	-20
pack then other b	26	-18	-14	-16
pack then other p		-18	-26	20
pack then other s	20	7		-22
pack then undefined is	-11		21
pack then undefined will	-26	36	-16	-13
pack then use pp				23
pack then work b		-26	-18	22	15
pack then work pp	-8	-13	16	5
pack then work s	-18	14	8
pack tin				-28
pack tub	60		-5	-29
pack tube		17		-19
pack use past before				23
pack use past behind				22
pack use present behind	-27			17
pack verb be before		-16	11
pack verb be behind	-22			24
pack verb blow behind	-5			10
pack verb bring behind	-7	17
pack verb burn behind				10
pack verb buy behind	-25			-10	21
pack verb do behind	-30	17	-13	13
pack verb fill behind				7
pack verb finish behind	-16	-33	-30	36
pack verb get behind				-6
pack verb go behind				17
pack verb grab behind	-25	34
pack verb hang behind	-19	-10	5	15
pack verb have before			-28	-18	18
pack verb have behind	-18		35
pack verb leave before			40
pack verb leave behind		-30	34	-32
pack verb make behind		-22	-10	15
pack verb need behind		4
pack verb null before	-5	29	-43
pack verb null behind	-28	6	19
pack verb null no	-33
pack verb order behind	24	-18
pack verb pick behind				-7	24
pack verb pull behind	17	-22
pack verb put behind	-5	12		-5
pack verb run behind	-11	-6		27
pack verb set behind	-9	-25	-11	23
pack verb take behind	-38		16	12		-4
pack verb throw behind	-26		-11	-18	22
pack verb use before	10	-6	-11
pack verb use behind				23
pack verb want behind	-21	29
pack whole clause	-54		7
pack work imperative behind	-21			7
pack work modal behind		8	6	-18
pack work owed behind	-33	26		-15	14
pack work past before		-40		22
pack work past behind	-10			49
pack work present before	-28	24		-13
pack work present behind	-19	-9	-11	41
plural area		-19	-13	15
plural count	-27			12
plural length	5
plural one	-8	22
plural pack	-6
plural volume	-28	18	9
plural weight	-11	24
pointer after need here	16
pointer after none sentence			13
pointer beside nothing	36
pointer cue have	22
pointer cue need		-8	7
pointer cue used	4			5
pointer flawed	9			-9		14
pointer left Q				11
pointer left new		-17		4
pointer left the	11
pointer name flawed	-4		12
pointer named before material		-5		7
pointer named before part	16			-12
pointer named before word						18
pointer null none no	21
pointer other past behind	-24		13			19
pointer right #		-6		9
pointer says imperative behind	26
pointer says none no	21
pointer says past behind	-12	-7		10		5
pointer verb null no	21
pointer work past behind		-11	-6	10
pointing	-27			16
right # N	25
right &	-20	17
right '	12
right (	-14			-24	8	8
right ( Q	23	-28	10	-19
right )	-11	14	-7	-14		17
right +	-12			8
right + G	33	-6		-18
right + Q	-25	10		22
right + a	-27	27
right -	15
right /	-18			17
right / G	-15	32	-14	-39
right =	21			-8
right @		7
right @ Q	-29	16	-10	12
right Q #	29
right Q G		-14		12
right Q Q	38			-19
right Q all	22			-14
right Q and	38	-16	-5	-10
right Q is			4
right Q off	6
right Q on	7
right Q short	10
right Q to	24			-12
right T Q					7
right T and	5
right T if	30	-22
right T the	19
right T to	-12	19
right a G	-6	10
right a Q	-32	39
right about	9
right about the	12
right above	23
right above the	28
right across	28
right across #	19
right across the	10
right after	10
right ain't	11
right all Q	16
right all around	28			-10
right all over	13
right all round	18	-4
right all the	26
right all up	16
right along the		-4		6
right already			13	-12
right already #			9
right and #		9
right and G	-8	18
right and N	-7	15
right and Q	-16	28
right and a	-49	14		11
right and it	23	-11		-7
right and no	6	-18	12	-9
right and then	17
right another	16
right are Q	33
right are all	38
right are at	25
right are cut	9	-7	6	-16
right are do	19
right are hang	-22			28
right are in	-22	-23	36
right are on				22
right are set		-12		4
right are shot	22	-6
right are up	-11	-20	-12	31
right aren't		9
right around the		-8		15
right arrive			10
right as	12
right at G	4
right at N	10
right at Q		9		-13
right at all	14
right at the	26
right back		15		-15
right back on	-8	24		-14
right bag	22
right be	5
right be #	14
right be N	11
right be Q	32
right be hang	21
right be just	9
right be leak	-15	21
right be loose	18
right be pack	16
right be weep	5
right before i	-5	17		-10
right before that		8
right before the	-6	9
right behind #	24
right behind G	11
right behind it	19
right behind the	12
right below	20			-7
right bend	18
right bend #	21
right between	16
right between the	15
right bind on	6
right blow	5
right bolt	17
right both				9
right both G	13
right both side	17
right bow	14
right break	16
right break #			7
right bring	30
right burn	8
right buzz	4
right by	4
right by G	37	-24
right by Q		6
right by T		8
right by the	32
right call	8
right call for	11
right can go	12
right can't	11
right catch	5
right caulk	5
right caulk #	8
right center	5
right change				7
right chip	24
right clean	8
right clean #	8
right close				5
right come #	26
right come Q	-27	-7	23	10
right come T	17
right come back	31
right come on	15
right come out	30
right come up	27
right come with		-4	26	-16
right complete	-9	15
right core				10
right cover	21
right crook	18			-7
right crush	6
right cut		-6		8
right cut #		-15	-6	13
right dead	22
right dead #	19
right deliver			17	-12
right didn't				13
right dig	6
right do #	16
right do not	21
right do the	9
right doesn't	15	-8
right don't let				8
right down from	13
right down the		7
right drill	5
right drip	8
right drip #	5
right dry	21
right dry #	11
right dump	9
right each	-9	-25		14	12
right each #	-9	-5		19
right eat	14
right every	25
right extra	-28		11	13
right feel	11
right fill		-7		6
right finally	23
right fine	10
right finish	7
right finish #		-15	-13	10
right fit				21
right fit #	-21			31
right fix	-11	-5		23
right fix #	-24	-11	-9	31
right flash	12
right float	8			-19
right flush	21
right for G	-30	32	-12
right for Q	36
right for T	11
right for it		16		-9
right for now	-19			32
right for that	-27	22	14	-20
right for the			5
right get #	-23	13	15
right get Q	29	-16		-18
right get a	36
right get its	10
right get no	-13	17
right get the	-16	21
right get their	-6			16
right glue	-17			30
right glue #				9
right go #		-9		13
right go Q	28			-14
right go back	19
right go in				18
right go on	-7			24
right go through	33			-18
right go up	14
right gonna				-5
right good	-16		25	-9
right good #	-14	-11	23	-9
right grout	6
right grout #	6
right hang				13
right hang #				12
right hang Q	10
right hang by	11
right has	16
right has Q	16
right has a	26
right has no	23			-5
right hasn't	-7	13
right have #	20
right have Q	10
right have be	7
right have the	34	-21	-20
right have to						12
right head	-5	5		5
right her	5
right here	-6	-9	30
right here #	-20	-4	33	-5
right him	11
right hit	11
right hold Q	5
right hook	7
right hook up	7
right i			7
right i have	-31	-18	36	-18
right i no	19
right if you	14
right in #				63
right in N	19
right in Q	29
right in T	7	12		-26
right in a	6
right in all	18
right in and	-27			30
right in at	27			-9
right in hall	27
right in it		-18		19
right in living room	21
right in my	-19	-19	33	-24
right in that	28
right in the			17
right in the kids	29		-12	-19
right in there			-8	9
right inside	-8		15
right inside #	11
right into		-17	-16	19
right is #	20
right is N	17
right is Q	23
right is T	26
right is a	4
right is all	19
right is at		-29	19	-12
right is bad	24			-7
right is bend	15
right is break	40		-14	-15
right is crack	31
right is cut	10
right is do	32
right is down				4
right is empty	-19	24	-9	-6
right is fine	26
right is finish			-8	17
right is glue	30
right is go	-10	-14		31
right is gonna	-13	20	-11
right is good	25
right is hang	30
right is leak	16
right is leave	-19	-10	18	11
right is miss	13
right is not	13
right is off	9
right is only	20
right is out	22
right is run	17
right is set	6
right is short	23
right is split	15
right is tear	8
right is the	29
right is to	17
right is wet	5
right isn't	12
right it #	14
right it T	13
right it back	14
right it on	20
right it up	9
right it's	11
right just	36
right keep	4
right land			7	-9
right leak	16
right leak #	18
right leaning		-18	10	-18		17
right leave			38
right leave #	-9		53
right leave from	9
right leave in			34	-9
right leave of	24		-16
right leave on	8			-13
right leave over			16
right lift	7
right like	6
right like a	5
right loose		-6	21	-16
right lose	14
right me	17
right me Q	17
right measure	16
right measure Q	12
right miss #	12
right miss Q	23
right more		12
right more #	-50	59
right more to	26	-11		-7
right mount				6
right mount #	-7	-7		22
right move	9
right my	32	-15
right nail	10
right near	12
right near the	32	-6
right need #		22	-8	-9
right need Q	24	-21
right need T	16
right need to	9
right never				9
right next	-8	20
right next #	-9	22
right next to		6
right no	8
right no #		5	5	-30
right no G	-38	31	-13
right no sorry	26	-21	-12	-4
right not		8
right not Q	12
right not before	11
right not the	13
right nothing	22	-4
right now #	11	-14
right now is	-40		-5	49
right now the	6
right of Q	-11	4
right of T	-18	-11		22
right of em		-8	-8	5
right of it			16	-24
right of my	21
right of that		17
right of them	20	-7
right of those	-5	25	-21	-22
right off	18
right off #	14
right off Q	4
right off T	18
right off at	6
right off it	21			-10
right on #		-9		25
right on G	-21	9		7
right on N	16
right on Q	25		-4
right on a	19
right on all	-8			15
right on every	29			-22
right on hand	-18	-30	41	-32
right on in	38
right on it	6
right on me	-30	34	-11	-14
right on my		9		-13
right on order	-33			-4	51
right on site	-15	-33	37	-37
right on that	-8		11
right on the	8
right on top	7
right once	7
right only	21
right only Q	8
right open #		-12	14
right or	30	-12
right or G	10
right order				-9	14
right order #				-14	24
right out #	47
right out Q	23	-4	-10	-13
right out T	-14	21
right out back	14
right out in				10
right out of		-34		22
right out of plumb	9
right over #	-14	-34	16	-31		22
right over Q	16
right over it				12
right over to	23			-19
right pack		10		-6
right paint	14
right pass	11
right peel	-9	16
right pin	8
right pipe	16			-11
right pitch	5
right place #	6
right plug	16
right prime		14
right pull	23
right pull #	11		-10
right pull Q	6
right pull out	16
right rattle	8
right read	10
right read Q	6
right replace	-7			18
right replace #	49			-42
right require		8	-5	-14
right require #		8	-5	-14
right return	5
right right	27
right right down	6
right right where	14
right rip	6
right rock	5
right rock #	5
right roll	-12		20	-12
right roll #	-17		23	-11
right rough	9
right rub	19			-8
right run #	5		5	-10
right run Q	9
right run out	7
right rust	15
right sag	7
right sag #	12
right sand		-17	18	-16
right say Q	17
right scrape	9
right scratch						17
right seal			15	-10
right seize	16			-4
right seize #	16			-7
right send	24
right set	12
right set #	8
right shim	16
right short		18		-9
right short #		23	-15	-37
right short Q	29	-16
right short by	-6	14
right shot	-9	17
right shot #	-9	17
right should	-14	24		-5
right show #	16
right show up						9
right since				8
right since the	-12			21
right sit	15
right sit Q	4
right sit in			18
right sit on	15	-10	-8
right snap	22
right so that				6
right some	8
right somebody	11
right sound	11
right spare	-32	-17	36	-24
right split	26			-6
right spray	14
right square		7
right squeak	5
right stain	-17	4	-5	13
right start	15
right stay	12
right stick #	11
right still			35	-12
right still has			4
right still in	-17	-23	34	-18
right still on	-26	-8	39	-36
right still to	38		-20
right stuff	-8	7
right swap				18
right swap #	-23			31
right sweat		15
right take		-7				13
right take Q	20
right take the	12
right tape	-24	-9	6	22
right tear #	29
right tell	-8			14
right test	14
right test #	16
right than the	17
right that go			15	-7
right the #	18
right the N	27			-7
right the Q	-39	37	-12	-19	16
right the box	26	-8
right the leave	9		-18
right the old	-10			17
right the size	17
right the top	5
right them	4
right then	-7			16
right there	-4	14		-7	5
right there #		8
right they	-16	-5	20			11
right this		6
right those	8
right through	6
right through #	22
right through it	13
right til	11
right til T	8
right till the	15
right to G	35			-8
right to Q	53
right to be	-5	26		-13
right to corner	14
right to go	29	-12		-33
right to look	6
right to the						21
right to wall	16
right too	-7	5
right top	13
right top #	9
right toward	7
right toward the	7
right trim		-5		14
right trip	5
right turn	-5		24	-12
right under	9
right under #		-4		13
right under G	14
right under it	24		-8
right under there	19
right underneath	10
right unopen	-26	-10	32	-19
right until T	24
right until the	18
right up				5
right up #		-24		27
right up Q	12
right up T	13
right up and	12
right up at	17
right up on	5	-15		4
right up the		-8		12
right up there	34	-31		-12
right up to	14
right use				19
right use #	-22			42
right walk	8
right want #		27	-33	-21
right want a	12
right want the	12
right we	20
right were	13
right when i	-6	5		-6
right when you	13
right where it			8
right which i	-8		14
right which is	22
right while					5
right will				-5
right wire	6
right wire #	11
right with	6
right with #	26	-13		-6
right with G	29			-11
right with Q	33		-20
right with a		6
right with it	12
right with me	-4	18	-13
right with no	25
right without	16
right wobble	9
right won't						14
right won't sit	-19	-7				25
right wont	6
right would		15	-6	-10
right wouldn't	21
right you	20
right1 &	-20	17
right1 '	12
right1 (	-14			-24	8	8
right1 )	-11	14	-7	-14		17
right1 +	-12			8
right1 -	15
right1 /	-18			17
right1 =	21			-8
right1 @		7
right1 about	9
right1 above	23
right1 across	28
right1 after	10
right1 ain't	11
right1 already			13	-12
right1 another	16
right1 aren't		9
right1 arrive			10
right1 as	12
right1 back		15		-15
right1 bag	22
right1 be	5
right1 below	20			-7
right1 bend	18
right1 between	16
right1 blow	5
right1 bolt	17
right1 both				9
right1 bow	14
right1 break	16
right1 bring	30
right1 burn	8
right1 buzz	4
right1 by	4
right1 call	8
right1 can't	11
right1 catch	5
right1 caulk	5
right1 center	5
right1 change				7
right1 chip	24
right1 clean	8
right1 close				5
right1 complete	-9	15
right1 core				10
right1 cover	21
right1 crook	18			-7
right1 crush	6
right1 cut		-6		8
right1 dead	22
right1 deliver			17	-12
right1 didn't				13
right1 dig	6
right1 doesn't	15	-8
right1 drill	5
right1 drip	8
right1 dry	21
right1 dump	9
right1 each	-9	-25		14	12
right1 eat	14
right1 every	25
right1 extra	-28		11	13
right1 feel	11
right1 fill		-7		6
right1 finally	23
right1 fine	10
right1 finish	7
right1 fit				21
right1 fix	-11	-5		23
right1 flash	12
right1 float	8			-19
right1 flush	21
right1 glue	-17			30
right1 gonna				-5
right1 good	-16		25	-9
right1 grout	6
right1 hang				13
right1 has	16
right1 hasn't	-7	13
right1 head	-5	5		5
right1 her	5
right1 here	-6	-9	30
right1 him	11
right1 hit	11
right1 hook	7
right1 i			7
right1 inside	-8		15
right1 into		-17	-16	19
right1 isn't	12
right1 it's	11
right1 just	36
right1 keep	4
right1 land			7	-9
right1 leak	16
right1 leaning		-18	10	-18		17
right1 leave			38
right1 lift	7
right1 like	6
right1 loose		-6	21	-16
right1 lose	14
right1 mark.	-9
right1 me	17
right1 measure	16
right1 more		12
right1 mount				6
right1 move	9
right1 my	32	-15
right1 nail	10
right1 near	12
right1 never				9
right1 next	-8	20
right1 no	8
right1 not		8
right1 nothing	22	-4
right1 off	18
right1 once	7
right1 only	21
right1 or	30	-12
right1 order				-9	14
right1 out of plumb	9
right1 pack		10		-6
right1 paint	14
right1 pass	11
right1 peel	-9	16
right1 pin	8
right1 pipe	16			-11
right1 pitch	5
right1 plug	16
right1 prime		14
right1 pull	23
right1 rattle	8
right1 read	10
right1 replace	-7			18
right1 require		8	-5	-14
right1 return	5
right1 right	27
right1 rip	6
right1 rock	5
right1 roll	-12		20	-12
right1 rough	9
right1 rub	19			-8
right1 rust	15
right1 sag	7
right1 sand		-17	18	-16
right1 scrape	9
right1 scratch						17
right1 seal			15	-10
right1 seize	16			-4
right1 send	24
right1 set	12
right1 shim	16
right1 short		18		-9
right1 shot	-9	17
right1 should	-14	24		-5
right1 since				8
right1 sit	15
right1 snap	22
right1 some	8
right1 somebody	11
right1 sound	11
right1 spare	-32	-17	36	-24
right1 split	26			-6
right1 spray	14
right1 square		7
right1 squeak	5
right1 stain	-17	4	-5	13
right1 start	15
right1 stay	12
right1 still			35	-12
right1 stuff	-8	7
right1 swap				18
right1 sweat		15
right1 t area.	38
right1 t defect.	16
right1 t finish.			-7
right1 t material.		15		-27
right1 take		-7				13
right1 tape	-24	-9	6	22
right1 tell	-8			14
right1 test	14
right1 them	4
right1 then	-7			16
right1 there	-4	14		-7	5
right1 they	-16	-5	20			11
right1 this		6
right1 those	8
right1 through	6
right1 til	11
right1 too	-7	5
right1 top	13
right1 toward	7
right1 trim		-5		14
right1 trip	5
right1 turn	-5		24	-12
right1 under	9
right1 underneath	10
right1 unopen	-26	-10	32	-19
right1 up				5
right1 use				19
right1 v buy.		-26		11
right1 v return.	12
right1 v see.	6
right1 v use.				19
right1 walk	8
right1 we	20
right1 were	13
right1 while					5
right1 will				-5
right1 wire	6
right1 with	6
right1 without	16
right1 wobble	9
right1 won't						14
right1 wont	6
right1 would		15	-6	-10
right1 wouldn't	21
right1 you	20
right2 (					7
right2 @	-8	-7		22
right2 about	27
right2 above	31			-9
right2 after	12
right2 again	25
right2 all	22
right2 along	-15	20		-9
right2 already	27				-21
right2 an	17
right2 and	11
right2 anything		13		-13
right2 around	35			-7
right2 as	21
right2 back	22
right2 backwards	23			-11
right2 bad				13
right2 balance	-10	-21	20	-11
right2 bathroom	20
right2 be		19
right2 bedroom	18
right2 before	33
right2 behind	18
right2 below		12		-19
right2 bend	12			-5
right2 black	25
right2 book	24	-14
right2 bore			16	-7
right2 both	15
right2 box	7	-12	-26	17
right2 break		-8	-15	13
right2 brown	-15	21
right2 build	-9			15
right2 burn				6
right2 buy	-28	21		-29	13
right2 by				-8
right2 cap		7
right2 catch	13
right2 caulk	17
right2 ceiling		9		-17
right2 center	22	-15
right2 change	-24	-6	-5	29
right2 chip	-15					23
right2 clean	14
right2 clear			16
right2 clog	12
right2 close		-7	19	-18
right2 cold	22
right2 complete	20			-5
right2 corner	16
right2 cover		16		-8
right2 crack	-14		14
right2 crook	26			-6
right2 day	4
right2 dead	24
right2 deliver	-38	11			16	16
right2 dig	11
right2 do		7
right2 drill	22
right2 drip	26	-5
right2 drop	19
right2 dry	37			-10
right2 each	13	-7
right2 eat	20
right2 em	10
right2 empty	-11	20	-6
right2 end	9	-9
right2 entry	27	-11
right2 every	33			-17
right2 except	21
right2 extra	-28	5	25	-31
right2 fill	18
right2 finally	15
right2 finish				4
right2 fit				7
right2 flash	10
right2 flat	13
right2 floor			10
right2 foam	6
right2 for		15
right2 from	24	-15		-18
right2 front	-21	-18		31
right2 get	-6	11
right2 glue				7
right2 gonna	-9	19	-8
right2 good			6	-6
right2 half		-11		12
right2 hand	-15	-28	40	-31
right2 hang		-17		18
right2 hard	21
right2 have	-9		19
right2 he	18	-4
right2 her	6		7	-32
right2 here	21		-9
right2 high	18	-6
right2 him	-20					24
right2 hinge			5
right2 his			13
right2 hold	13
right2 hole	27			-25
right2 hollow	20
right2 home	-25		27	-14
right2 hot	20
right2 i			8
right2 i'm	17
right2 if	26	-22
right2 in			19
right2 inside	13
right2 install	-20			27
right2 into		-5	-5	9
right2 its	14
right2 just	20
right2 keep	15
right2 kitchen	-6	11
right2 last	9		-8
right2 latch	15
right2 lay	-19	18
right2 leak		5		-7
right2 leaning	-10		16
right2 leave	-15					10
right2 level	25			-7
right2 lift				5
right2 little	11
right2 living room	-9			15
right2 long	20			-9
right2 look	6
right2 lose	7
right2 low	12
right2 lower	22
right2 mark	6
right2 maybe	13
right2 me		18	-17	-8
right2 measure	10
right2 mine	-22	17	13	-9
right2 miss	16			-10
right2 more				11
right2 mount	-17			29
right2 move	16
right2 mrs					13
right2 mud	33	-21		-17
right2 my	-13		39	-27
right2 nail	11
right2 near	17			-5
right2 need	-27	40
right2 never	9
right2 night	12
right2 no	25
right2 noon	26	-9
right2 notch	20
right2 nothing	13
right2 now				26
right2 off	38
right2 oil	14
right2 old				11
right2 once	12
right2 ones	-18		15
right2 only	39
right2 open				4
right2 order	-22				47
right2 other	-10	-30	29	-36
right2 out				8
right2 owner	17
right2 pack					9
right2 paint	16			-11
right2 painted shut	10
right2 pass	16	-6
right2 piece	-17		-5	31
right2 pipe	21
right2 plane	19
right2 plug	25
right2 plumb	27			-14
right2 pop	24	-12
right2 pour	15
right2 pull	21
right2 put	-24			27
right2 reach	19
right2 read	28
right2 ready	5
right2 red				-5
right2 replace	-33	-17		38
right2 rip	19
right2 rocking	19
right2 rot	23			-12
right2 round	20	-6
right2 run	44			-21
right2 scratch	17	-8
right2 screw	5
right2 seal	12
right2 second	14
right2 send		-7	10
right2 set	14
right2 she	22	-6
right2 short	29
right2 shot	19
right2 show						19
right2 side				12
right2 sit	-4					15
right2 site	-15	-33	37	-37
right2 slow	7
right2 snap	5
right2 so	17
right2 soft	19			-6
right2 solid	13
right2 something	11
right2 sorry	25	-19	-8
right2 split	-24	11		18
right2 spray	26			-13
right2 stand	15
right2 start	4
right2 stick	14
right2 still	-19	5	-10	26
right2 stop	-21		23
right2 strip	19
right2 supposed	-24		-5	-14	24
right2 t fixture.	40
right2 t role.	8
right2 t surface.	17
right2 t tool.		-13	14
right2 t work.		-26		12
right2 take	21	-10
right2 tear	22
right2 tell	-18			22
right2 that		5
right2 the kids	29		-12	-19
right2 their	4	-23	12
right2 them	7
right2 then	31
right2 there	5	-11
right2 this	34			-17
right2 those		5	-5	-7
right2 though	10
right2 through	5
right2 tight	8
right2 tile	-16	-20	28	-17
right2 till	12
right2 to	14
right2 too		16
right2 too long	-22	24
right2 too short	26	-12		-13
right2 top	25
right2 touch	25			-4
right2 truck	15	-29		-10
right2 turn	25			-6
right2 twist	18
right2 under	5
right2 v buy.	-31				43
right2 v have.	-9		19
right2 v need.	-24	37
right2 v say.				13
right2 v see.	6
right2 wait	17	-5	-7	-17
right2 want				7
right2 water	15
right2 we	22
right2 weep	11
right2 wet	18
right2 what	16
right2 when	-8			20
right2 where	31			-7
right2 while	-7	20
right2 white	-23	22		5
right2 wire	8
right2 without	25
right2 wrap	-6		13
right2 you	31
right2 your	13
right3 (		-19	18	-15
right3 -	19
right3 T	13
right3 a	5
right3 about	33
right3 above	27	-5		-17
right3 across	25
right3 after	18
right3 again	18
right3 air	22	-7		-15
right3 all	27
right3 already		-21			19
right3 anchor	6
right3 and	-7	22
right3 anything	-7	17		-9
right3 are	9
right3 around	-29			36
right3 as	15
right3 at	4
right3 attic	10
right3 backwards	14
right3 bad	19
right3 bag	-21	17		-26	11
right3 bar	-8		-4	20
right3 basement	-5		17	-7
right3 bathroom	-9			17
right3 bay	16
right3 bed	7
right3 before				-8
right3 belly	22
right3 below	19
right3 bend	8	-16
right3 big	19
right3 bolt		-14		16
right3 book	-10	15
right3 both	28
right3 bottom		-12
right3 box	-40		44
right3 bracket	-8	7	6
right3 break	-24		26	-11
right3 bring		12
right3 by	6
right3 can	14
right3 ceiling	11		-14	4
right3 cellar			5
right3 chip						17
right3 clamp	-23	23
right3 clean	-20	19		-10		15
right3 closet	19			-18
right3 coat		5		-9
right3 cold				10
right3 come				6
right3 corner	16
right3 counter	-8	-19				20
right3 cover	17
right3 crack	5
right3 cut	29
right3 deep	26
right3 den	22
right3 do		5
right3 doorway	13
right3 down	20
right3 drop	4
right3 dry		-16
right3 drywall	13
right3 em	22
right3 enough	31	-24
right3 every	17
right3 everywhere	20
right3 except	19
right3 fine	18
right3 finish	24			-11
right3 fireplace	13
right3 first	-20	-9	24	-13
right3 first coat	26		-8	-5
right3 flat	39
right3 floor	38
right3 foot	17
right3 for	4			-16
right3 frame		8		-13
right3 front	24
right3 garage			9
right3 gas	-5			12
right3 get						7
right3 glue	20			-13
right3 good	26	-18
right3 gray	8
right3 grind			13
right3 guy	5			-5
right3 half	-20		24
right3 hall	24
right3 hall closet	26			-7
right3 hallway	30
right3 hand	-13	5		13
right3 hang	36			-7
right3 has		8	-5
right3 have	-19	11	17	-13
right3 he		13
right3 her	-15		9
right3 high	11
right3 higher	9
right3 his	14
right3 hole	18
right3 holes		-4		9
right3 house	11
right3 i	12
right3 if		13
right3 inside	20			-7
right3 into				5
right3 island	-16		6
right3 it	27
right3 it's	-17			21
right3 its	16
right3 joint	-16		22
right3 kitchen	39
right3 land	6
right3 last	8
right3 leak	-7			15
right3 lid	-9	17
right3 like	10
right3 line		15
right3 lip	-9			15
right3 list	-4	24		-19
right3 little	-24		24
right3 living room	5
right3 loose	10	-16	-23	10
right3 low	11
right3 make	18	-14
right3 man		-20			20
right3 match	15
right3 me		-5	-7	21
right3 my		-7			5
right3 nail	8
right3 near	8
right3 need	12
right3 never	13
right3 new			-12	4
right3 next	15
right3 no	16	-9
right3 not		9
right3 now	6
right3 nursery	13
right3 off	35
right3 office	-17	-17	14
right3 old	13
right3 ones		23		-5
right3 only	39
right3 open	26
right3 opened up	-7	19		-8
right3 or	6
right3 other	27
right3 out of plumb	7
right3 outside	30	-12
right3 over	36			-19
right3 own	28	-22
right3 owner	23
right3 paint			11
right3 painter	16
right3 pantry		-8	21	-11
right3 paper	20			-12
right3 past	22
right3 patch				9
right3 pipe	12
right3 porch	36		-5	-21
right3 powder room	-28		21	11
right3 proud	21
right3 pull	22
right3 right				11
right3 roof	19
right3 run				5
right3 salon	-6			15
right3 same	17	-15
right3 say		8		-8
right3 screw	6
right3 scribe	26		-4
right3 second	4
right3 second coat	7
right3 see	-11	15
right3 set	16
right3 shed	-5	-9	22	-24
right3 shop	-22	8	18	-4
right3 short	-19	27
right3 shut	6
right3 side	34
right3 slab	15
right3 so	11
right3 solid	-10			22
right3 split	23
right3 stairs			6
right3 stand	-16			20
right3 steps	21			-11
right3 still	31			-14
right3 store	-21	-18	30	-28
right3 street	22
right3 study	-8		19	-14
right3 take			9	-14
right3 tall				10
right3 tap	14
right3 tape	11	7	-12	-14
right3 tell	5
right3 than	15
right3 then	17
right3 there	14
right3 they	26	-9
right3 thing	-26	8		15
right3 those	-13		12
right3 though	-19	14		7
right3 through	7
right3 tile	19
right3 till	10
right3 top				5
right3 truck	-19		16	5
right3 turn	18
right3 under	18
right3 up	28
right3 use				5
right3 van	-23	-23	50	-42
right3 walk	19
right3 wall	37
right3 walls				6
right3 want	-27	-13	32
right3 water	20			-6
right3 way		8
right3 we	9
right3 where	30	-6
right3 which	6	-23	14	-17
right3 white	19			-24
right3 whole				10
right3 wire	-6	19	-9	-17
right3 with	7
right3 without		13
right3 won't	25			-10
right3 wrap		18	-8	-16
right3 wrong	27	-16	-6	-5
right3 x				11
right3 yet	-7	18
right3 you				6
says imperative before	13
says modal behind		5
says owed before not		5
says owed behind not	9
says past before not	5
sized	-18
sold so true	-39
sort area				16
sort pack	-17
sort volume	-28
sort weight	-5
then ain't	21
then ain't is	21
then arrive	5		5
then arrive pp			10
then bag	-4	17		-23
then bag b	-8	18		-26
then balance	31	-13
then be b					7
then bend	28
then bend pp	18
then bind	13
then bind s	5
then blow	12
then blow s	11
then bolt	27
then bolt pp	27
then book		5
then book b	12
then book pp		14		-9
then bow	28	-14
then bow pp	22	-11		-5
then box	-19		18
then box b	-20		13	8
then bring	-19	19
then bring b	-29	25
then bring i	10
then build	11
then burn	5
then buy		12	-17	-6	4
then buy b	-10	13		-22	35
then buy pp	-12	-25	-16		27
then buzz	13
then call	13
then call b	11
then call s	7
then can't	9
then can't will	9
then caulk	5
then caulk pp	5
then center	5
then center pp	5
then change				6
then change pp		-7		10
then check	20
then check pp	20
then chew	16
then chew pp	16
then chip	25
then clean	14
then clean b	12
then clean pp	6
then clear	5
then close b	4
then close s	-11			16
then coat	-12			16
then come bp	32	-8
then come p						6
then come s	25
then complete		11
then complete b	-5	13
then core				7
then core b	-4			12
then cover		7
then cover b		9
then cover pp	12
then cover s		10
then crack b	-4	-8	19	-4
then crook	18			-5
then crook pp	18			-5
then crush	6
then crush pp	6
then cure	12
then curl	17
then cut				7
then cut bpp	-7	-5		9
then deliver			17	-12
then deliver pp			20	-12
then didn't	-10	-14		5	17
then didn't will	-10	-14		5	17
then die	18
then dig	9
then dig pp	8
then do b	-10	26
then do p	13
then do s	18
then doesn't	6			-6
then doesn't will	6			-6
then drill	15
then drill pp	15
then drip	16
then drip b	4
then drip s	7
then drop	20
then drop pp	18
then dry pp		-10	14	-4
then dump	10
then dump s	11
then dust	25	-6
then dust b	25	-6
then eat	11
then eat p	12			-11
then feel	9
then feel s	7
then file	7
then fill b	-7			15
then finish b	7
then finish pp				7
then fit				19
then fit pp	-15			27
then fit s	25			-5
then fix	-9	-6		23
then fix pp	-13	-7	-4	25
then flash	14
then float	15			-16
then float b		6
then flush	20
then freeze	15
then freeze p	10
then get b	-30	45		-19
then get i		14
then get s	33
then give p				7
then glue	-15			29
then glue pp	-15			29
then go b	24			-17
then go i	21
then go p				34
then gotta	9
then gotta will	9
then grout	6
then grout pp	6
then hang		-10
then hang b	38	-25		-13
then hang i	30
then hang pp				23
then hang s	29
then has	5
then has has	5
then hasn't		8
then hasn't has		8
then have b			19
then have pp	6
then head	-15			19
then head b	-17	10		11
then hit	8
then hit s	8
then hold				5
then hold b			-14	16
then hold i				8
then hold pp	17
then hook	13
then hook pp	7
then hum i	7
then i've	-7		17
then i've has	-7		17
then install	23
then isn't	17
then isn't is	17
then keep	21
then keep pp	20		-7
then keep s	5
then kick	7
then label	-17	-6	23	-14
then land	16			-8
then land b	24		-14
then land pp			9	-14
then lay pp				6
then leak	14
then leak s	4
then leave			24
then leave pp			23
then leave s				8
then let	20
then level				4
then lift	8
then lift i	10
then like	26
then like b	26
then look	30
then look b	8
then look s	12
then lose	14
then lose pp	15
then make	6
then make b	15
then make pp		8
then match		26	-8	-7
then match b		8
then measure	16
then measure b				8
then measure bp	32	-8
then measure p						6
then measure s	4
then meet	7
then miss		9		-4
then miss i		16
then miss s	11
then mount				6
then mount pp				10
then move p				34
then move pp			21
then nail	9
then nail pp	11
then need b	6
then need pp	-9	40		-24
then need s	15
then oil	6
then oil b	6
then open b	30			-5
then open pp	-23	-23	22	10
then order	-15			-10	56
then order b	-24			-6	53
then order pp				-10	21
then other s	16
then own	28	-24
then own b	28	-24
then pack		13
then pack b	-11	18
then paint	12
then paint pp	12
then pass b		12
then patch	-6	-13		20
then patch pp	23			-10
then peel	-6	16
then peel b	10
then peel i	-17	20
then pick	10
then pick s	9
then pin	8
then pin b	8
then pipe	16			-10
then pipe pp	16			-12
then pitch	5
then plug	16
then plug pp	16
then plumb	31	-9		-26
then pop	14
then pour	7
then prime		13
then prime pp	-6	17
then pull	16
then pull i		13		-12
then pull pp	24
then put	16
then put bpp	17
then rate	9			-5
then rate pp	9			-5
then rattle	9
then read	16
then read i	7
then read s	14
then replace	-10			23
then replace pp	-10			23
then require	5	5	-8	-12
then require pp	5	5	-8	-12
then return	15
then return s	8
then rip	10
then rip pp	10
then rock	5
then rock pp	5
then roll	-19	-16	13	17
then roll b	-12	-19	20
then rough	9
then rough pp	9
then rub	19			-8
then run	4
then run bp	26			-16
then run i			6
then run s		5
then rust	16
then sag	8
then sag s	4
then sand		-21	15	-10
then sand pp		-21	15	-12
then say b	28
then say pp				21
then scrape	8
then scrape s	7
then scratch	17	-18		-7		6
then scratch b	30	-21		-5
then scribe	13
then seal	-8	-4	7
then seal pp			15	-11
then see b	22
then see pp	37
then see s		7
then seize	16			-4
then seize pp	16			-4
then send pp			10
then set	18
then set bpp	32
then shim	16
then shim pp	16
then should		13
then should will		13
then show						6
then show b	24
then show pp	-31		19	-5		29
then show s	8
then sit	4
then sit i			5
then sit pp	5
then size	8
then size b	7
then smell	22
then sound	22
then sound b	24
then split	26
then split bpp	26
then spray	15
then spray pp	14
then square					11
then square b					11
then squeak	16
then squeak s	13
then stain	-14			13
then stain pp	-14			13
then stand	-6			18
then stand pp	9
then stand s				7
then start	20
then start b	12
then stay	13
then stay b	14
then stick s	10
then stretch pp				5
then strip	5
then strip pp	12
then stuff	-6	6
then stuff b	-15	10		7
then supply	4
then supply b	4
then swap				14
then swap b	27
then swap pp				24
then sweat		10
then take						4
then take b	17	-22
then take p	5	-5				11
then tape	-24	-9	6	22
then tape pp	-24	-9	6	22
then tell	-22			28
then tell pp	-22	-5		29
then test	12
then test b	14
then test pp	5
then think	7
then throw	22
then tie	12
then tin	-21	-20	9	16
then tin b	-21	-20	9	16
then touch	10
then trim		-5		14
then trim pp		-5		14
then trip pp	7
then turn			17
then turn b			18	-5
then turn pp			6
then unopen	-26	-10	32	-19
then unopen pp	-26	-10	32	-19
then use				20
then use pp				32
then wait	33	-28
then wait b	34	-33
then walk	18
then walk b	16
then want b	23
then want pp	-21	18	10	-24
then warp	-6					19
then warp pp	-6					19
then weep	11
then weep i	9
then weep s	5
then were	10
then were is	10
then wire	5
then wire pp	5
then wobble	12
then won't						12
then won't will						12
then wont	7
then wont will	7
then work	16
then work bp	26			-16
then work bpp	8
then would		13		-5
then would will		13		-5
then wouldn't	9
then wouldn't will	9
then wrap			5	-9
then wrap pp			9	-12
unit bag	-44		12	17
unit bottle	15			-30
unit box	-44
unit bucket				-12
unit bundle	-23	-9	9	-5	21
unit can	-38			36
unit carton	-6	-28	47	-43	-8
unit cartridge	-22	33	-7	-6
unit case	-23		27
unit coat	65	-41		-21
unit each	-44	22
unit from said	-44
unit from shared	-58	21	8	-31	18
unit gal	-28	14
unit kg	-16	-8	11	12
unit kit	-46	-10	8	11	5
unit lb		11
unit length	-33		15		11
unit m	-16
unit pack		11		-26	17
unit pail	-29		-14	24
unit pair	-10	18	-17
unit pallet	-14		26	-34
unit pt	-5
unit qt	-63		45	-7
unit roll	-53		16	14
unit row	21	-27		6
unit set			-38	20
unit sheet	-11			23
unit sleeve	-27	10	10
unit sq ft		7	-9
unit sq m	4	-6		5
unit square	-27			27
unit stick	-71	36				7
unit tin	-41	10		16
unit ton	-4	-20	-9	18
unit tub	-34	7
unit tube	-67	14		10
unit yd	-41	46	-6	-21
use buy before	-23	9	-12		18
use buy behind		6
use buy imperative behind		24
use buy modal behind	-10	26
use buy owed before	-19	27	-5	-5
use buy owed behind	7
use buy past before	-23	-20	-11	5	24
use buy past behind	-22	-46	-5	-28	63
use buy present behind	-15		-7	-19	24
use have owed behind	15
use have past behind	21		-10
use measure modal before	-5					21
use measure modal behind	-26	41		-7
use measure owed before	9
use measure owed behind	11	-7
use measure past before			8
use measure present behind	11
use move imperative behind	5
use move modal before	27
use move modal behind	22
use move owed before			18
use move owed behind				-16	16
use move past before			6
use move present before	8
use need behind		15
use need modal before	31	-11
use need owed before	8
use need owed behind		10
use need past before	-13	32		-5
use need past behind	25	-7
use need present behind		23
use null imperative behind	10
use null modal behind		16
use null owed before					10
use null owed behind			5
use null present behind		-13	11	-9
use other imperative behind		28
use other owed before	-17	21
use other present before	11
use return before	19
use return behind	-24	-27		7		27
use return past behind	-41	-23	-23	9	-6	32
use say modal before	23
use say modal behind	13
use say owed behind	8
use say past before	39
use say past behind	19
use see owed before	18
use see owed behind	14
use see past before	7
use see past behind	5
use see present before	5
use see present behind	9
use use before				28
use use behind				17
use use imperative behind	-21	-5		29
use use modal behind		22		-28
use use past before	-7			33
use use past behind				18
use use present behind		-6		16
use work imperative before	13
use work owed before	13
verb add behind	-6			10
verb add imperative	16			-22
verb add past	-34	-17	-8	42
verb adjust before	15
verb adjust behind	20	-4
verb adjust past	17
verb arrive before			8
verb arrive behind		9
verb arrive past			7
verb ask imperative	16
verb ask past	15
verb ask present		6
verb back before	8
verb back past	-14	21		-12
verb balance behind	-19		18
verb be past	30
verb bed past		-8	-6	9
verb bend before	22
verb bend behind	12
verb bend imperative	14
verb bend past	20
verb bind before	5
verb bind present	6
verb blow before	9
verb blow present	-8	18
verb bolt behind	-14	-13		22
verb bolt past	-5	-8		18
verb bore behind	-13	-7		22
verb bore imperative	-17	-10		23
verb borrow past	-6	17		-8
verb bow before	25	-14	-5	-10
verb box before		-12		17
verb box behind	-14	10		7
verb box imperative	12
verb box present	-10	-7		27
verb break behind	-6	9
verb break past	16	-8
verb bring before		-10	16
verb bring behind	-9	25
verb bring imperative		26
verb bring modal		19
verb bring owed	28	-18
verb bring past	-32	-45	11	-28		41
verb bring present	-19	29
verb bubble past	17
verb build before	12
verb build behind		-13		5
verb burn before	23			-9
verb burn behind				25
verb burn owed	10
verb burn past				20
verb buy before	-16	13	-19		12
verb buy behind					5
verb buy imperative		33
verb buy owed		18
verb buy past	-11	-26	-5	-12	27	6
verb buy present	-10	-16	-8	-11	22
verb buzz before	6
verb call past	-4	15
verb call present	23
verb can before		4	-28
verb can behind	6	-5
verb can modal			-16	5
verb cap behind	28			-9
verb cap past	29			-6
verb catch before	9
verb catch behind	11
verb catch modal	6
verb catch present	12
verb caulk before	5
verb caulk imperative	6
verb center past	4
verb change before	-4			17
verb change behind	-15			21
verb change imperative	6	7		-22
verb change owed	-10	21		-15
verb change past	-24	-4		33
verb change present	-9	-10		30
verb chase before	5
verb chase imperative	7
verb check imperative	13
verb check present	10
verb chip behind	15
verb chip past	26
verb clean before	8
verb clean behind	21
verb clean past	16
verb clean present	17
verb clear behind				15
verb clear present	10
verb clip behind	26			-13
verb clip past	-5	-5		13
verb close before	4
verb close behind	4
verb close past				11
verb close present	31
verb come behind				-10	26
verb come imperative	-6				18
verb come modal	-11	22		-4
verb come owed	20
verb come past		-15		-6	9
verb come present				-8	18
verb consum past	-23	-26	-30	38
verb could behind	23	-7
verb could modal	23	-7
verb count behind			13	-17
verb count past	-13	-23	28	-21
verb count present	5		-11
verb cover before	31	-10		-6
verb cover behind	20
verb cover modal	6
verb cover past	13
verb cover present	32	-14		-12
verb crack behind	10
verb cup before	11
verb cut before		11
verb cut modal		18
verb cut owed	26
verb cut present	16
verb deliver before			15	-10
verb deliver past			20	-12
verb dial past	26		-11	-7
verb didn't modal	-13	19	-7	-6
verb dig behind	19
verb dig past	13
verb ding behind	17
verb ding past	25
verb do before				-12
verb do imperative		-5	15
verb do owed	10
verb do past				8
verb doesn't behind	27	-7
verb doesn't modal	27
verb don't before	19
verb don't behind		9	-11
verb don't modal			-7
verb dont before	9
verb dont modal	9
verb drain before	10
verb draw behind	14		-6	-12
verb drill before	16
verb drill behind	14
verb drill modal	19
verb drill owed	7
verb drill past	8
verb drill present	7
verb drip before	12
verb drip behind	8
verb drip past	22
verb drive behind				8
verb drop present	10
verb dry before	-11		17
verb dry modal	23
verb dry owed		6
verb dump before		11
verb dump present		6
verb ease behind	23
verb ease past	15
verb eat behind				15
verb eat past	19			-5
verb eat present	-13			19
verb end behind				5
verb end past				8
verb fail past	12
verb falta behind		12	-9	-15
verb falta owed		12	-9	-15
verb feel behind	21
verb feel modal	21
verb figure behind	10
verb figure imperative	-21	33
verb figure present	21	-7	-14	-10
verb file behind	10
verb fill before	27			-8
verb fill present				6
verb find imperative	-9	20
verb find past	21
verb finish before			-6	14
verb finish behind				10
verb finish imperative		-12	-18	15
verb finish modal		-15		10
verb finish past	10
verb finish present				14
verb fit before	-4			22
verb fit behind	-8			24
verb fit past	-37	-8		48
verb fit present	32
verb fix before		-5		20
verb fix behind				9
verb fix past	-13	-8	-7	30
verb fix present	12
verb flip behind			16	-4
verb float behind		-18	-7	20
verb flush before	5
verb flush behind	9	6		-15
verb flush imperative	22	-7
verb flush past	23			-9
verb foam behind		-9		17
verb foam past		-9		17
verb forget behind		12
verb forget present	5
verb frame before	17
verb frame behind	24	-8
verb frame past	18
verb fray before	9
verb fray past	9
verb fre behind	-5	-9	20	-17
verb fre past		-7	18	-16
verb freeze before	12
verb freeze past	12
verb get imperative		41
verb get modal	16	-5
verb get owed		11
verb get past			12
verb give before	25
verb give imperative	9
verb give past	8				11
verb give present	-20					18
verb glue before				7
verb glue behind				4
verb glue imperative	20
verb glue owed	24
verb glue past				25
verb glue present	10
verb go imperative		9
verb go modal	24
verb go owed					11
verb go past				33
verb go present	7
verb gonna before		13	-5	-11
verb gonna behind	-31		30	-18
verb gonna owed	-23		29	-18
verb gotta behind	8
verb gotta owed	9
verb grab imperative		6
verb grab modal	-5	21
verb grab past	-24	-29	-19	-18	36
verb grind behind	18
verb grout before	10
verb grout present	5
verb guess behind	-8	19
verb guess present	-19	25		-9
verb hang before				30
verb hang behind				15
verb hang imperative	-12		21	-17
verb hang modal	18
verb hang owed	28
verb hang past	-20			54
verb hang present	6
verb has before	5
verb has behind	17
verb has owed	17
verb haul past	-16	21		-11
verb have owed		-7	11
verb have past	21		-10
verb head behind		14
verb head present				13
verb hit imperative	19
verb hit past				14
verb hold before	11
verb hold behind	10
verb hold past	21
verb hold present	16
verb hook behind		-8		16
verb hook modal	11
verb hook past		-6		18
verb i'll behind		6		-8
verb i'll modal		6		-8
verb install past	-14	-17	-10	28
verb keep behind	7
verb keep imperative			5
verb keep past			7
verb keep present	15
verb kill behind	14
verb kill owed	12
verb kill past	11
verb knock behind	20
verb knock past	19
verb know behind			12
verb land before			4	-7
verb land behind	10
verb land owed	9
verb land past	7
verb land present	-7				16
verb latch before	16
verb latch modal	14
verb lay before	-6	9
verb lay behind	-12			6
verb lay modal		11
verb lay past	-19			34
verb lay present			12	-17
verb leak before	22
verb leave before			26
verb leave imperative	18
verb leave modal	21			-9
verb leave past			27
verb leave present		-4
verb let behind	18
verb let imperative	25
verb level behind	-8			17
verb lift behind	18
verb lift past	12
verb like behind	-4	23
verb like modal	-18	30
verb like present	13
verb listen behind	12
verb lock modal	6
verb look present	6
verb lose before	14
verb lose modal	9
verb lose past	7
verb make imperative	-4	5	5
verb make past	8
verb mark behind	13			-5
verb mark past	15			-4
verb match modal	17
verb measure before	16
verb measure behind	6
verb measure past	15
verb measure present	10
verb mention past	14
verb miss before	16
verb miss behind	-10	28
verb miss imperative	20	-4
verb miss present		18
verb mix behind				15
verb mix past		-7	-4	17
verb mount before	-6	-7		21
verb mount past	-36	-9	-23	43
verb move before	23
verb move imperative	15
verb move modal		10
verb move owed	10
verb move past	35			-10
verb move present	-8	-9	19
verb mud before	20	-5
verb must behind	11
verb must owed	9
verb nail before	11
verb nail behind				11
verb nail past				6
verb need before		15
verb need behind		15
verb need owed		14
verb need past	-14	36	-7	-10
verb nick behind	12
verb nick past	14
verb notch behind	16
verb null imperative	10
verb null present		-13	11	-9
verb open before		-5	19	-17
verb open behind	21
verb open past		-20	16
verb open present	28
verb order before	-14	5		-9	20
verb order behind					5
verb order modal	-8	14
verb order past		-29		-17	50
verb order present	-8	11		-14	9
verb owe behind					9
verb owe present					10
verb pack imperative	-8	17		-7
verb pack past				4
verb paint imperative	16
verb paint modal			16
verb paint owed	17
verb paint present	11
verb pass before	18
verb pass past	21
verb pass present				9
verb patch before	-20			23
verb patch imperative	-7	15
verb patch owed	16
verb patch past	29			-7
verb peel behind	14
verb peel past	14
verb peg past	14
verb pick behind					27
verb pick imperative		25
verb pick past	-17	-16		-15	56
verb pick present	15
verb pipe past	18			-12
verb pitch before	8
verb pitch past	9
verb place behind	-21	-5		29
verb place imperative	-23	-7		30
verb plane behind	13
verb plane imperative	16
verb plow past	29			-25
verb plug before	22
verb plug imperative	24
verb point behind	14
verb pop behind				-8
verb pour behind	8	-7
verb pour owed	14
verb pour past				13
verb prime behind	7
verb prime imperative	25
verb prime past				4
verb prime present	20
verb pull before	7
verb pull behind	10
verb pull imperative	20
verb pull owed	10
verb pull past	8
verb push behind	21
verb push modal	14
verb put before	22
verb put modal	-19	30		-5
verb put owed				-12	6
verb put past				14
verb put present	-17	30		-10
verb raise behind	15
verb raise imperative	15
verb rate behind	23			-5
verb rate past		12		-11
verb rattle before	9
verb reach modal	9
verb read past	7
verb receive past	-44	-20	28	-30	30
verb redo behind			5	-14
verb redo imperative	17
verb rehang behind				11
verb rehang past		-7		11
verb relay behind	-7	-6		15
verb relay past	-6	-8	-4	15
verb remind behind		-5	10
verb remind imperative		-5	10
verb replace before		-13		16
verb replace behind		-9		6
verb replace past		-20		18
verb reset behind		-8		6
verb reset imperative		-11		15
verb reset past	21
verb return before	14
verb return behind	-13	-17		-19		29
verb return past	-26	-12	-14	-20		33
verb return present			9
verb rip owed			14
verb rock before	5
verb rock past	19
verb rod behind	-6	21		-17
verb rod past	27			-16
verb roll behind	11
verb roll past	7
verb rough before	9
verb rough past	8
verb rub behind	14
verb run before	16
verb run imperative		11
verb run modal	18
verb sag before	4
verb sand behind	22
verb sand imperative	18
verb sand modal	4
verb sand owed	16
verb sand past				-9
verb sand present	8
verb save behind			12	-4
verb save past			16	-5
verb say imperative	23
verb say modal	30	-9
verb say past	6		8	-15
verb scrape before	5
verb scrape behind	26
verb scrape past	19			-4
verb scratch past				-6		17
verb screen owed	5
verb screw before	-5			18
verb screw behind				8
verb screw modal	11
verb screw owed	13
verb screw past				9
verb scribe before	16
verb scribe modal	24
verb scribe owed	20
verb scribe past	5
verb seal before		-14	17	-8
verb seal behind	6
verb seat before	11
verb seat modal	11
verb see before		9		-5
verb see owed	22
verb seize before	17			-7
verb seize past	17			-7
verb send before	-14	15	5
verb send behind	-5					25
verb send imperative	-27	35	-12	-10
verb send modal	-10	17
verb send owed	9
verb send past	-12			-8		31
verb send present	27	-13
verb set behind				5
verb set modal	27
verb set past				8
verb shim before	21
verb shim behind	27
verb shim imperative	10
verb shim modal	7
verb shim owed	13
verb shim past	27			-7
verb ship behind			13
verb ship past			7
verb short past		6		-8
verb should behind	-8	-9		18
verb should modal	-8	-9		18
verb show before	-4	-9	13	-14
verb show behind	16
verb show past	-19		18			8
verb show present	31			-12
verb shut behind	5
verb sign behind	8
verb sign past	4
verb silicone before	24
verb sister behind				6
verb sister imperative	7			-7
verb sister past				22
verb sit before						15
verb sit modal	-19	10				19
verb sit owed		-12
verb sit past	26
verb sit present	9
verb size behind	27	-15
verb slam present	11
verb slide behind	9
verb slide modal	6
verb snake behind	21
verb snake past	24			-5
verb snap before	-4	15
verb snap behind	7
verb snap past		12
verb snug behind	28			-19
verb snug past	29			-18
verb sort past	22
verb spend behind	-23	-16	-21	32
verb splice before				15
verb splice behind	6
verb splice past				9
verb split behind				4
verb split past	-23			27
verb spray before	19			-5
verb spray past	21
verb squeak before	7
verb stack behind	-5	-6		16
verb stack past	-15			22
verb stagger behind	-5	-4		13
verb stagger past				12
verb stain before	-24	19		12
verb stain behind				-10
verb stain past	-5	7
verb stand past	14
verb start before	23
verb start imperative	5
verb start modal	7
verb start present	11
verb stay before	8
verb stay behind		-16	16
verb stay imperative		-20	20	-9
verb stick imperative	37	-12		-14
verb stick past				17
verb stop before	-23	-16	21	9
verb stop behind	34
verb stop past	22
verb stop present	-17	-12	18	4
verb straighten behind	20
verb strap behind	-22		8	11
verb strap imperative	-13		15	-15
verb strike before	23	-9
verb strike modal	23	-9
verb strip before	17
verb strip behind	6
verb strip past	19
verb stuff behind	-24			19
verb stuff imperative	-7	9
verb stuff past	-4	-13		23
verb supposed before	-12	-18			24
verb supposed behind	20
verb supposed owed	-4	-16			21
verb swap before	-11			29
verb swap imperative		15		-27
verb swap modal	20		-11	-18
verb swap past	-7			41
verb swear behind	20
verb swing present	16
verb tack behind	14
verb take before				-6		14
verb take behind						26
verb take imperative		-24	25
verb take modal	-6	26	-7	-21
verb take past	-5	-16				46
verb take present		-23
verb talk behind	10
verb tap before	15
verb tape before		-5		4
verb tape behind		11
verb tear before	9
verb tear past	10
verb tell before	28			-14
verb tell modal	6
verb tell owed	9
verb tell past	33			-8
verb tell present	15
verb test before	16
verb test behind	15
verb test past	22
verb text imperative	7
verb think past	8
verb throw behind					8
verb throw imperative	-6	9		-9	14
verb throw past		-11		6
verb tie before	13
verb tie behind	20			-6
verb tie past	23
verb tighten behind	7
verb tighten past	10
verb tile before	5
verb tile past	16
verb top behind	20
verb top present	14
verb touch before	6
verb touch behind	6
verb touch imperative	7
verb trace behind	7
verb trace past	8
verb trim before				5
verb trim behind				13
verb trim imperative	10
verb trim past	-11	-8		25
verb trip before	15
verb trip past	15
verb try behind			5
verb try imperative	-14		17
verb try past	27
verb turn before	33
verb turn behind	23
verb turn imperative	17
verb turn modal	9
verb turn past	35
verb unopen past	-25	-11	34	-19
verb use before				28
verb use behind				17
verb use imperative	-21	-5		29
verb use modal		19		-26
verb use past				29
verb use present		-18		15
verb wait before	12
verb wait behind	20
verb wait present	17
verb walk behind		-5		-7	18
verb walk past		-10		-8	19
verb want modal		16
verb want owed	4
verb want present		15
verb wash behind	20
verb weep before	16
verb weep present	12
verb will before	14
verb will behind	21
verb will modal	26
verb wipe behind	15
verb wire before	9
verb wire past	5
verb wobble before	13
verb wobble past	17
verb work before	11
verb work behind	-7		18	-8
verb work past	20
verb work present	5
verb would modal	-18	22		-5
verb wouldn't behind	-10	18
verb wouldn't modal		14		-10
verb wrote behind	18
verb wrote present	18
volume after have far	-31	27		-26
volume after have sentence	-52	23	8
volume after need far		-24	33	-20
volume after need here	29		-16
volume after need sentence	-35	37
volume after none far	-40		23	8
volume after none here	-18		-8	25
volume after none sentence	-19			19
volume after used far	-13	-24	21	5
volume after used here		-20	9
volume after used sentence			-10
volume beside bring	-19	14
volume beside buy	-21	36
volume beside buy b nobody		26
volume beside figure		7	-14	-11
volume beside get	-17	15	7	-13
volume beside go	-14		-4	24
volume beside have	-25		36	-9
volume beside have b person	-11		26
volume beside need		28
volume beside need b person	-14	44
volume beside nothing	-13		20
volume beside other b nobody		11
volume beside other b other	-29	23	-39	-39	20
volume beside other b person	-36	-23		28
volume beside other p other		-14	-21	8
volume beside other p person	-14	-11	29	-16
volume beside pour	-31	-6	-10	36
volume beside take		-24		11
volume beside use				34
volume beside use pp nobody				30
volume beside use pp person	-5			19
volume beside work pp other	-14	-16	-20	27
volume buy imperative behind		26
volume cue ate	-12	-26	-36	39
volume cue came		-19	27	-22
volume cue have	-24		58	-20
volume cue lacks		-20
volume cue need		25
volume cue used	-37			27
volume flawed	-28	16
volume have present behind	-14		32
volume kept	-25	6	21	-26
volume left #	-34	9	7
volume left about	33	-26	-16	-24
volume left and	-28				19
volume left buy	-22	32	-7
volume left figure		7	-14	-11
volume left get	-9	5	9
volume left have	-25		33	-12
volume left maybe	-14	-16	25
volume left me	-15	33	-13
volume left need	-12	56
volume left pour	-31	-6	-10	36
volume left take		-13				-6
volume left through	-9			19
volume left use				34
volume more	-17	25		-5
volume move past before	-21	-20	15	16
volume move past behind	-25	-21	16	10
volume name flawed			-4	5
volume named before material	-19		34
volume named before part	35	-16	-12	-18
volume named before surface	-17			20
volume named before word	8		-5	-11
volume named here finish	-33	16		15
volume named here material	-46	10
volume named here word	-14	25	13	-29
volume need modal behind	-17	26
volume need owed behind		5
volume null copula behind	-15	10	7	-5
volume null none no			6
volume other copula behind		-18	16
volume other imperative behind	-10	19
volume other past behind		-20	9
volume other present behind	-34		6	13
volume pointing		34	-15	-29
volume right #	-45			15
volume right Q	-35	21	9	-23
volume right and	-12	36	-10	-19
volume right go	-26	-28	-25	36
volume right in		-24		18
volume right leave	7	-4
volume right of	-26	39	-16	-6
volume right on	-32		28	-14
volume say imperative behind	-35	19		10
volume says copula behind	-14		14
volume says imperative behind	-34	36
volume says modal behind	-42	24	-29		18
volume says none no			6
volume says owed behind		17
volume says past before	-54		22	20
volume says past behind		-16		9
volume says present behind			9
volume sold so false	-9			7
volume sold so true	-22		33
volume then move p	-26	-28	-25	36
volume then move pp	7	-4
volume then undefined will	4	-10	-20	12
volume then work pp	-45	-8	28	5
volume use past behind				32
volume verb be behind		-18	16
volume verb bring behind			11
volume verb buy behind	-17	29
volume verb figure behind		7	-14	-11
volume verb get behind	-19		10
volume verb go behind	-8			18
volume verb have behind	-14		32
volume verb leave before	-15		47	-5
volume verb need behind		7
volume verb null behind	-15	10	7	-5
volume verb null no			6
volume verb take behind	11	-13				-9
volume verb use behind				34
volume whole clause	-14			12
volume work past behind	-6		-12	15
weight after need sentence		5		-20
weight after none sentence			-12
weight after used sentence	-12	-26		24
weight beside hold	14
weight beside measure i other	11
weight beside nothing	-6	8	-9	8
weight cue have	-21	-33	26	6
weight cue need	-32	34
weight cue used	-5			18
weight left #	-30	8	-5	28
weight left at	19
weight left hold	14
weight name flawed	-7			7
weight named before material				11
weight named before part	9
weight named before surface	13	-4
weight named before word	-21	12	-18	13
weight named here material	-35	20		15
weight named here word	-16		17	-9
weight null copula behind	24
weight null none no		4	-4
weight right #	-10	9
weight says copula behind	37	-4		-21
weight says imperative behind	-37	42		-5
weight says none no		4	-4
weight says past before	-18	-18	-5	31
weight says past behind	-5	-30		22
weight says present behind	-9	-20	22	-24
weight sized	-13	24	-5
weight sold so false				9
weight verb get behind	-16	20		-13
weight verb null behind	24
weight verb null no		4	-4
weight whole clause	13			-25
weight work past behind	15	-13	-8
who goods modal		7
who nobody owed		17
who nobody present	-8		48
who thing imperative		12
who thing owed	10
whole false		-38	31
whole true	-8
`;
