/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after #	31
after &		13	-15
after '	11
after (	-15		11	-30		14
after )	-20	17				8
after +	-12	11
after /	-24		12	4
after 1	-21		23
after =	26
after @	-6			10
after about	26
after above	24
after acclimate	-6		16
after account			7
after across	20
after actually	19	-10	-5	-7
after add	-7	-17		18
after adjust	23
after aff	-16			22
after again	23
after against	20
after ain't				13
after air	39	-11		-27
after already	-8
after altogether	22
after an	12
after anchor	14
after another		15
after any	7	-7
after anybody's		15	-11	-11
after anyhow	8
after apart	23
after around				11
after arvo				13
after as				8
after attic			-5	4
after backsplash	-7			16
after backwards	24
after bad				8
after bag	-13		4
after balance	-5	-15	18	-6
after bang	-5	-7		19
after bare	11
after basement			9
after bathroom	-8	-7	-12	27
after bay	9
after beat	16		-18	-27
after bed	28
after bedrooms	23
after belly	21
after bench	-16	-18	14	16
after bend	7
after beside	32			-26
after better	-19	23	-12
after between	13
after bind						7
after black	8			-5
after bled	9
after bleed	12
after bleeding through		12	-6
after blow	29
after board	22	-17	-10
after bolt	-9			26
after bore	-10		11
after both	17
after bought far copula	19
after bought far imperative		6
after bought far modal	24	-8
after bought far none	10	-11	7	-11
after bought far past	-10					25
after bought here		-22	-22	-25	34
after bought here and		-12	-11	-10	17
after bought here none	-10	-32	-23	-24	35
after bought here past	16			-8
after bought here run-on	10	-4
after bought here start	-24		-5	-13	25
after bought sentence	-8			-4	48
after bought sentence and	-21	-27			22
after bought sentence comma	-17	-37	-8	-40	55
after bought sentence copula					9
after bought sentence imperative	-4	14
after bought sentence none	-25	-42		-47	54
after bought sentence past	-16	19	-15	10
after bought sentence present	6
after bought sentence run-on	16
after bought sentence word	-14	25	-6	-8
after bow	31	-10
after bowl	21	-8		-5
after box	-10		16
after boy	19
after bracket		-5		4
after brass	8
after bridge	21	-8
after bring	-13	23
after brown		19
after brush	-21		22	-14
after bubble				4
after bug	19
after build	-10			15
after bury	31	-9		-17
after bust	31
after butt				9
after butt joint	14	-6
after button	5
after buy	-33	28
after buzz	31			-8
after came off	-14		23	-7
after can't		7
after carbon	13
after carton	-19	6	17
after cat	15
after catch	16
after caulk	6
after ceiling	9			-13
after cellar			21
after centers	21		-9	-13
after centre	14
after centres	13
after chair		-9		8
after change	-19	-6		28
after channel	22
after chase	21
after chatter	17		-6
after check	19
after chew			7
after chewed up	13
after chip						24
after chirps	14
after church	10
after clamp	-22	28
after clean	-6
after click	-5		16
after clinic	17
after clip	-6			14
after clog	16
after closet	28
after cold	5
after column	21		-15
after coming off	23
after common		9
after compact	13
after cope	-21	24
after copier	18
after cornflakes				4
after correct	5
after corridor	39	-5
after corrosion	28	-11		-11
after could	10
after counter	6	-33				13
after course	22
after cover		14
after crook	34			-7
after crosse	10
after crosses		10
after crown	19
after crumbl		-11
after crumbling	-20	22
after crush	18
after ctr	29	-13		-14
after cup	24
after cure	18
after curl	20
after cut out	9
after day	17
after daylight	25	-18
after days	31	-14		-5
after deal	7
after deck	29
after deep	25
after deliver	-16			-11	6	6
after den	29
after dent	28			-11
after didn't		-12			17
after die		12
after different	18
after dig		12
after dime	-8		14
after ding		8
after dining room	9
after dont		10
after doorway	29
after drags	11
after drain		10
after draw	21
after dresser	23
after drill	7
after drum	6
after drywall	41			-20
after duct	22	-4		-7
after dust	14
after each		-9		22
after early		6
after eat	8
after edge		12		-8
after electrician	13
after else		16		-14
after empty	17
after ends	18			-16
after enough	31	-21
after entry	20
after even	6
after ever	23	-7		-5
after every	32
after everything	12	-4
after everywhere	29
after exam	-6				17
after extra	-29		19	5
after eye	23			-14
after face	35
after factory	-19	26
after falling	12
after falls	15
after family room	-16	12		9
after far	-17			25
after fasten	14
after feed	8
after feel	9
after feet		12
after fell	-27	18		11
after fell off	-13	19
after fence		-5	15
after figure	23	-11
after finally	22
after fine	12
after finger	17
after finish	10
after fire	11
after fireplace				8
after first			9
after first coat	26		-10
after fit				18
after fix				15
after flash		11		-11
after flat	29
after flicker	13
after flip	27
after float	13			-11
after flood test	12
after floor	26
after floor's	-6		15	-10
after floors	9
after flush	17
after foil	27	-5
after foot	28
after fourth	24
after frame		21
after fray	20
after freeze	18
after fronts	28			-18
after frost	-13	-15	-20	5	19
after gable	5
after garage			34	-10
after gas	-15			16
after give	-11			22
after glue				12
after gonna		9
after good			19	-9
after grade	5
after gray				16
after green				7
after grout	22	-13
after grout line	5
after guest room	17
after gurgles				-9	19
after gut	6
after guy				-7
after hair	15
after half	-6		11
after hall closet	27
after hallway	14
after hammer	16
after hand			17
after happen		12		-8
after hard	37
after hasn't		18	-17
after have far and	8
after have far comma			8	-33
after have far none			8
after have far owed		7
after have far past						11
after have far run-on	13
after have here	9
after have here and	21
after have here comma	36	-13
after have here copula	6
after have here none	-8	-14	36	-4
after have here owed	18
after have here past	41		-4
after have here run-on	6
after have here start	-26	4	24	-26
after have here word			10
after have sentence comma	-9		25	-7
after have sentence imperative		31
after have sentence modal	-17	29
after have sentence none	-8		21	-18
after have sentence past	16
after have sentence run-on	7
after have sentence word		44		-10
after haven't	-26	19
after he's	17
after head	-4			11
after hearth	8
after heat	5	5		-13
after here	-8		27
after high			14
after him						18
after his	-7	12
after hit	16
after hole	5
after holes	21			-9
after hollow	29
after home	-25	15	19	-9
after homeowner	8
after hook		6
after hot		-8		16
after hot side	6
after how				8
after hub		-12	-4	16
after humidity		13
after i'd	30			-9
after i'm	8
after i've			14
after if		6
after inch	-11			16
after inside			13	-6
after inspector	-20	26
after install	-9			24
after instead	4			-15		12
after into				11
after isn't	17
after its	24
after jam		-5
after job	-20		4
after joint	-10		22
after joist bay	9
after just	12
after kennels				-9	19
after kick	11
after kicks out				8
after kid	-6		15
after kind	-14	18
after kink	-10			20
after knock	7
after know	29
after l	9
after lab	-12	21	-24	-6
after label	-6		18
after lacquer	-5	15		-24
after lag	11
after lane	27
after latch	22
after later		-5	15
after latex	23			-6
after laundry	13			-13
after law	12
after layers	7
after leak	7
after lean	-20	12		7
after leaning		-7	26	-5
after least	17
after left hand	9
after leg	5
after legs				8
after length	25
after let	9
after let go	22			-6
after level	24
after lid		13		-5
after like	16
after line	8		-7
after linen closet		15		-20
after lint	13
after lip	-10			15
after list	6	12		-24
after lite	-5	-6	17	-8
after little	-22	-10	21		11
after live	30
after living room	-7			14
after lol	20
after long wall	9
after look	4
after lose	14
after lot			15	-10
after lounge	20
after lower	-13	15
after luck	12
after lunch	25			-8
after main	20
after man		7		-5
after maple	18	-15
after mark	18
after mask	33		-20
after mat	21
after match		15
after mate	-8	23	-14	-18
after maybe	5
after me		9
after meantime		11	-9
after measure	18
after meet	6
after mind	32	-10	-19
after mine	-18	24		-15
after minimum	32	-25
after minus		-5		9
after miss		16
after miter	24
after moisture	14
after morning	4
after mount	-12			32
after movers	17
after mr	8
after mrs	7
after mud		14	-9	-19
after mud room	-10			15
after mush	-14		-9	20
after mushy	8
after my			21
after ne	31	-7		-14
after near	26
after nearly	22
after need		11
after need far and	13
after need far copula	16
after need far modal	10
after need far owed	6
after need far run-on	10	-12
after need far word	32			-11
after need here comma		10
after need here modal		7
after need here none	-12	46		-8
after need here past	39			-7
after need here present		21
after need here run-on		9
after need here start	-25	34
after need sentence comma		46		-20
after need sentence imperative	32	-10
after need sentence modal	8
after need sentence none		64		-20
after need sentence owed	25	-7
after need sentence past	-13		12
after need sentence present		18
after need sentence word	34
after needle	23			-10
after neighbor		9
after new				12
after next	-6	6
after nice	-25	15		10
after nick	18
after night	12
after nobody	25
after none far and	12
after none far owed		13
after none far run-on	46
after none far word	23
after none here comma	-6	6
after none here copula	6
after none sentence modal		15
after none sentence stop	10	-16	-7	-16	19
after north		-7	5
after north side	22
after notch	-5	14
after nothing	17
after now				11
after nowhere				9
after number	13			-7
after nursery	31		-14	-9
after oak	8
after off	12
after office	-24	12	-7	20
after oil	23
after once	11
after ones	-23	33
after oot	19
after opened up		9
after or	22
after order	-27				53
after other			6	-8
after others	-16			20
after oughta	18
after our				-11
after out of level	13
after out of plumb	6
after outside	20
after own	11			-7
after owner		12
after p		9
after painted shut	15
after painter		13
after pairs	29
after pantry				-10
after paper	17			-8
after parking lot	25	-11
after part	8
after past	23
after patch	5
after patio				6
after peel	-5	19
after per	20
after pick	-13	24
after piece	14
after pieces	22		-14
after pile		-6
after pin	14
after pine	-5			7
after pipe	6
after pit	15
after pitch				5
after plane				10
after plaster		17		-13
after plate	5	-20
after please	-10	33		-29
after plenty	-38	27	27	-16
after plug	10
after plumb	-6	-8		23
after point	15
after pop		4
after popcorn	-20	-14	28	-15
after porch	10	-11
after pour	22
after powder		-7		8
after powder room	-20		17
after pretty	-18			24
after promise		14		-8
after proud	11
after pt	-15			20
after pull	10
after punky	11
after push	38			-13
after put	-5			15
after putty	-20		15	6
after quit	13
after r	26			-5
after rains	-8	16
after rake	-23	19		7
after rate	11
after rattle	5
after re	24
after reach	-8	-19			22
after ready	16
after real	-19		24
after rear	23
after reception	9
after red	-11		17
after redo	15
after rental	18
after replace	-15			25
after require		10	-11	-16
after rest	-29	5	-20	23
after return	23
after returned far	-10		10
after returned far comma	-12	22		-7
after returned far copula	13
after returned far none	-12	11	5	-9
after returned far owed	-20	9	10
after returned far past	-16	-9	13	-5	9
after returned far present		-4	10
after returned far stop			19
after returned here	32
after returned here and	13
after returned here copula	20
after returned here past	27
after returned here start	15
after returned sentence	-17			-29	17	24
after returned sentence and	-36		12		21
after returned sentence comma	-6	-35	-25	-40	10	35
after returned sentence copula	4
after returned sentence past	-9	-18	-14	-19	33
after returned sentence run-on		8
after returned sentence word	7
after ridge	-15	-29	7	16
after ring	11
after rise	7			-16
after road	12
after rock	6
after rocks		-7		4
after rod		10	-6
after roll	-21	-14	18	13
after room	14
after rooms	-14	-7	14
after roots	18
after rotten	11
after rough	10
after rough opening's	-25			12		19
after round	29
after ruiz	6
after rust				11
after rusted through	28			-14
after sag	13
after salon				6
after same				11
after saw	15
after scrap	12	-4	5	-14
after scrape	24
after scratch	18	-17		-8
after screed	16
after screen	20			-5
after scribe	17
after seam	8
after second				18
after second coat	25
after second floor	-9	-9		17
after see		14
after seize	19
after send	-12	11
after she	-12	10
after shed	-41	15	16
after sheet	-17	4		11
after sheets		-5		14
after shim		16
after short		17
after should	-21	5		18
after shut	5
after shy	24
after side	13
after signal's		-7		12
after silicone	10
after silver	-5	22
after site	-20		35	-34
after skip	23
after slab		7
after slide	18
after slope	24
after slow	7
after small	17
after smell	21
after smooth	-12	4		11
after snap		12
after soft	20
after some		7
after somebody's	14
after somewhere	6
after sorry	11		-18
after sort	25
after sound	21
after spare	-50	-36	50
after spins	20
after spoon	13
after spray	40
after spun	22			-18
after square					16
after squeak	16
after stack		-10		5
after stain	-4	6
after stair	8
after stairwell	-22	-12	19	-20	16
after stand	-7			7
after staple	17
after start	23
after steam	8
after steps		-11	19	-8
after stick	5
after still			25
after stock	-21	9	9	4
after stop			7
after store	-19	-26	14	-25		14
after story	5
after straight				-12
after street	29
after stretch	8
after strike	15
after strip	16
after stub	-12			16
after study		-11	14	-11
after stuff	-15	19
after sub	-24	-8	-9	28
after supposed	-6				20
after swap				11
after sweat		11
after swing	-7					21
after tacky	-9	-5	18
after tae	18
after tag	-19	25
after talk		-12		15
after tank	19
after tap	22
after tear	8
after tell	-6			21
after template	29
after than	12
after thank		-8		14
after the kid	-12			17
after the kids			-8	5
after the wrong		4
after the yard		-15	-6		5	14
after their	14	-21	5	-4
after them	6
after then	15
after there's	-8	19		-9
after they're	33
after they've	20	-5		-5
after thick		4
after thing		-16	-12		27
after think	10
after this	10
after those		13
after thread	12
after through	22
after tie	22
after tight	11
after til	16
after tile guy		13
after tiler's	6
after tin	-26	-22	11	19
after tip	7
after toast	13
after toaster	20
after too big	28	-6		-15
after too deep	-17	22
after too high	35	-20
after too long	7
after too short	31	-7		-7
after touch	27
after towards	6
after town	11
after trade	-4	22
after trailer	-23	-37	24	5
after trim	-30	23	-6	11
after trip	24
after tube	35
after tubes		14	-13	-14
after twice	7
after twist	18
after underneath	7
after unit	29
after units	15
after unopen	-23	-9	34	-19
after upside down	26
after upstairs	25
after use				18
after used far and	27
after used far copula	14
after used far imperative		5
after used far owed		12
after used far run-on	35			-5
after used here comma		-13		28
after used here imperative		-8		4
after used here none	-6	-34		33
after used here owed		-16	11
after used here past	27
after used here start	10
after used here stop	18
after used here word	4
after used sentence and				9
after used sentence comma				11
after used sentence none				32
after used sentence owed		15
after used sentence word		24
after utility	15	-17
after van	-35	-20	51
after very	10
after wait	21
after walk	18
after wall's	8
after walls	19
after walnut	6	-8
after waterlog	23
after way					7
after we	14
after weatherstrip	18
after weep	30
after weight	13	-9		-7
after wet	23			-7
after whenever	14
after where	14
after whistling				14
after white	-25	24
after whoever	5
after whole	4
after why	10
after wide	20
after width	-20			9		17
after wind				10
after winter	13
after within	17
after without	11
after wobble	5
after won't	34
after won't latch	9
after wont	9
after work	24
after would		13
after wouldn't	5
after wrap		8
after wrong	4	-21	-18	-15		20
after x	-4
after yellow	12
after yet	-8	5		4
after you	16
after you'd				7
after your	12
again bought	11		7		-37
again have	23
again need	70	-77	24	-27
again returned	-5			-15	26
again used			50	-42
ahead #		10		-9
ahead &	-31	26		10
ahead '	32			-11
ahead )	31	-6
ahead -	4
ahead 1		5
ahead 2				5
ahead 3	-8			14
ahead @	36
ahead above	24
ahead acclimatising	21
ahead add				5
ahead adjust	22	-5
ahead again				9
ahead against	21
ahead ain't	17
ahead air	18
ahead alarm	21
ahead all				15
ahead already		-6
ahead am			4
ahead an				5
ahead anchor	-12		20
ahead angle		-12
ahead another					7
ahead any	-9	17
ahead anybody	7
ahead anyhow	8
ahead anything	-13			18
ahead apart	6
ahead apartment	7
ahead are				8
ahead around	25
ahead arrive	-16		19	-9
ahead as	26
ahead ask	18
ahead attic's	9	6	-14	-9
ahead b	28
ahead baby	17
ahead backsplash	-6	15
ahead bad	31	-12
ahead balance			13
ahead balcony	-7	15		-9
ahead band		11
ahead basement	19
ahead basement bath	-13	-7		21
ahead bath	33
ahead bead		6
ahead beaut	7
ahead bed	24	-12	-5
ahead bedroom 1				11
ahead before	9
ahead behind	14
ahead belly in	4
ahead below	18
ahead bend	23
ahead better	24	-13
ahead between	22
ahead big	15
ahead bin		17	-15	-9
ahead bind	5
ahead black	5			-9
ahead bled	15	-12	-6
ahead bless	5
ahead block				21
ahead board	-18	24		-5
ahead boards	29
ahead bolt	-5			22
ahead bond	-5	18
ahead book	-5		18
ahead borrow	19
ahead both	20
ahead br	5
ahead bracket	11	-9	6	-16
ahead brass	-5			14
ahead break	-5	17
ahead bring		20
ahead brown	-7			15
ahead bubble	12
ahead build	5	-13
ahead burn				20
ahead bury	6
ahead button	-4	-10	-6	18
ahead buy		6
ahead buzz	11
ahead c	19
ahead cab	-15		11	7
ahead came off	22
ahead cap	-19			30
ahead care	21			-6
ahead carry	-5	11
ahead catch	7
ahead caulk			7
ahead ceiling	12
ahead center	12
ahead chalk	16
ahead change				10
ahead choose	12
ahead chrome	-19	24
ahead chuck		9
ahead chunk	10
ahead circuit	13
ahead clamp				16
ahead clearance	6
ahead client	32	-21
ahead closet	14
ahead coat			13
ahead cock				4
ahead code	26	-20
ahead coffee	16	-5		-7
ahead cold	22
ahead cold side's	26		-7
ahead color			-10	14
ahead connect	5
ahead contact	-6		18	-13
ahead cope	26	-11
ahead corner	-11					5
ahead could	10			-21
ahead couldn't	14
ahead count			11
ahead counter	17
ahead cover	5
ahead crawl	-5			11
ahead crosses		10
ahead crown		-7			11
ahead crumbling				5
ahead crush	17
ahead cure				11
ahead customer	18
ahead cut out	20
ahead d	5
ahead dad	20	-9
ahead dark	15
ahead deck	16
ahead deep	22
ahead den		11		-7
ahead dent	18
ahead dial	29		-13	-16
ahead didn't	-5	10
ahead ding	22
ahead dip		15	-7	-8
ahead disconnect	31	-10		-15
ahead doesn't	22
ahead dog	10
ahead dont			6
ahead doubl	17			-5
ahead downstairs	13
ahead draft	15
ahead drain	4
ahead draw	12
ahead drill	16
ahead drip	8
ahead driveway	7
ahead drop	28
ahead drywall	10
ahead dump				14
ahead each	32	-20
ahead early		-21		13
ahead ease	19
ahead eat		-10		31
ahead edge				21
ahead edges	-16		9	13
ahead eggshell	-18	20
ahead either	30	-18		-7
ahead electric	15
ahead electrician	8
ahead else	22
ahead em	23
ahead empty	19
ahead end	15
ahead enough			28	-5
ahead ensuite	16
ahead entry	8	-15	-13	7
ahead epoxy	-5
ahead even		-5		6
ahead ever		5
ahead everything				16
ahead exam	23
ahead except	24
ahead exterior	23
ahead extra		-15	-13			14
ahead face	15
ahead falls	13
ahead falta		13	-9	-13
ahead family room	7
ahead far						13
ahead feed	26
ahead feel	19
ahead fell		21	-22	-22
ahead fella	17
ahead fence	-15	-11		23
ahead fifth		-17		14
ahead figure		14
ahead fill				14
ahead finally	33	-8		-5
ahead find	5
ahead finish				25
ahead fire	17			-5
ahead first	-22		12
ahead first coat				8
ahead first fix	9
ahead fish	22
ahead fit				5
ahead fix	10	-8
ahead flap	6
ahead flaps	15
ahead flash	20
ahead flip			14	-4
ahead float			-4	7
ahead flood test	-8		18
ahead floor's	17
ahead flush	9	5		-13
ahead foam				26
ahead foil	-7	-20	22
ahead footings	18	-8		-5
ahead fourth	14
ahead foyer	10
ahead frame				6
ahead framing's	16
ahead fre	-6	-14	21	-18
ahead fresh	-14		11
ahead front				18
ahead front room	13			-4
ahead fronts	20			-13
ahead full	4
ahead gable	28
ahead gal	-22					25
ahead galvanize	10
ahead garage	13
ahead gas				11
ahead god		-14
ahead gonna		6		-12
ahead good	25	-9
ahead gray	-11		23	-11
ahead green	-33	29
ahead grout	13	-22	-9	12
ahead grout haze	5
ahead grunt	-16	-15	6	14
ahead guess	-7	19
ahead guest room	6
ahead guy	24
ahead hair	6			-5
ahead half	-5	5	9	-9
ahead hall	33
ahead hall closet	-19	-5	24	-13
ahead hand	9
ahead happy	14
ahead hard	17	-19
ahead hardy	6
ahead hasn't	31	-13
ahead haul	22
ahead haven't		20	-13	-11
ahead he	11
ahead he'd	17
ahead he'll				-6
ahead headroom	12
ahead hear	10
ahead hearth	16	-15
ahead height	25			-8
ahead height's	23			-5
ahead hendersons	13
ahead here			23
ahead hers	17
ahead high	10
ahead him	-7	6	9	-15
ahead hinge	8
ahead ho		5		-5
ahead hole	13
ahead holes	5
ahead homeowner	24
ahead honeycombing	7
ahead hook		-12		17
ahead how	-13
ahead hub	11
ahead hum	16
ahead husband	12
ahead i'd		29	-9	-9
ahead i'm		5	4
ahead i've			33
ahead inch	-23	25
ahead inside		8
ahead inspector	28
ahead install				14
ahead instead	23			-17
ahead insulate	23
ahead into	10
ahead isn't	21
ahead it'll			8	-10
ahead itself	28
ahead jacket	5
ahead job	-5	-10		22
ahead joker	30			-23
ahead kick	16
ahead kill	14
ahead kind	15	-8
ahead kindly	-17	20
ahead kit				8
ahead knees	8
ahead knit	12
ahead knock	22
ahead la	6
ahead label	20
ahead ladder	-8			14
ahead lady	26	-14		-17
ahead lady's	22
ahead lag		6	-10
ahead lake	-5					11
ahead land	13
ahead landlord	14
ahead laser	24	-17
ahead last	-23		22	11
ahead latch	29	-9
ahead laundromat	27			-14
ahead laundry	26
ahead laundry room	10
ahead layer	-16	-16	9	7
ahead layers	14
ahead lead	8
ahead leak	6
ahead lean	21
ahead leaning	10
ahead least	-4	13
ahead left hand	14
ahead leg	8
ahead legs	-22	17	-19	9
ahead let go	35
ahead library				13
ahead lid				8
ahead lid's	13
ahead lift	21
ahead line				7
ahead linen closet	-17	6		11
ahead lip	-8			15
ahead list	24	-11
ahead listen	14
ahead little	30			-15
ahead living room	22
ahead load	10
ahead lock	-19		12		14
ahead loft				4
ahead lol	11
ahead long		8
ahead look	19
ahead loop	18
ahead lord	19
ahead lose	5
ahead lot		-17				8
ahead low				8
ahead lower	17
ahead luis	35		-6	-15
ahead machine	34	-13
ahead main	23
ahead man	22
ahead mark	9
ahead master	15
ahead match	19
ahead mate	-30	33	-6	-7
ahead maybe	-21		33	-7
ahead me		20
ahead measure	14
ahead meet	20
ahead middle		7
ahead mind	22
ahead miss		19
ahead mix				5
ahead moisture	19
ahead moisture's	23			-5
ahead mold	15
ahead more		11
ahead morning	11
ahead mortar	16			-7
ahead mount	-5			19
ahead mouse	-8			15
ahead movement	12
ahead mr	9
ahead much				10
ahead muck	-6			13
ahead mud	18	-6
ahead mudd	18	-12
ahead mudroom	18
ahead must	15			-5
ahead my	8
ahead n	15
ahead nah	16
ahead nail				6
ahead nail holes				11
ahead near	24
ahead nearly		-5		15
ahead need		19
ahead nest	-7			15
ahead never	12
ahead next	26	-15
ahead nick	28
ahead nobody	13
ahead north wall	6
ahead not even	10
ahead notch	17
ahead note	13
ahead nowhere		10		-14
ahead number	11
ahead nursery		-16	-9	16
ahead oak	-21		7	17
ahead off	5
ahead oil	17
ahead okafor	5
ahead okafor's				14
ahead old	20
ahead once	19
ahead one's	42
ahead ones	24
ahead opened up	24
ahead opening's					10
ahead or	-11	7	11	-4
ahead order		13
ahead other			7
ahead out of plumb	28	-5
ahead outside		12
ahead outta	28	-4
ahead owe	-17	27	-4	-13	9
ahead own	24			-6
ahead p	-22			23
ahead pack	-11			24
ahead painted shut	14
ahead painter	27
ahead pantry				17
ahead paper	-11	20
ahead parlor	6
ahead past	4
ahead patio	25
ahead peel	20
ahead phone	14
ahead pick					13
ahead piece	8
ahead pile	-5		16	-9
ahead pin	-22	-13	7	18
ahead pipe		-8
ahead pitch	16
ahead place	-5			20
ahead plan	16
ahead plane	21
ahead plaster		11
ahead plate		5
ahead plenty	-6		24
ahead plumb	20			-11
ahead plumber		7
ahead plus	-20	12	10	-5
ahead point	6
ahead pool	16
ahead pop	13
ahead pour	12	-12	-5
ahead powder room	15
ahead pressure	4
ahead prime	15
ahead proud of	8
ahead pull	16
ahead pump				15
ahead push	23
ahead put				9
ahead putty	22
ahead quick	29
ahead quit	20
ahead quote	21	-4
ahead r	-15	23		-16
ahead rain						17
ahead raise	15
ahead rake	33	-19
ahead rate	17
ahead raw	5
ahead reach	11
ahead read	23
ahead ready	-16	19		-4
ahead rebuild	-25	-13		34
ahead red	15
ahead redo	-10			6
ahead rehang				10
ahead relay				11
ahead remains	24
ahead remind			7
ahead rental	18
ahead repair	-29	-16		36
ahead replace				8
ahead report	21
ahead require			13	-28
ahead reset		-7		12
ahead rest	-44		31
ahead return	-11			-21		22
ahead reveal	16
ahead reveal's	19	-6
ahead ridge	20	-8
ahead ring				23
ahead rise	14
ahead rm	5
ahead rod		13		-12
ahead roof	24
ahead room	34			-6
ahead roots	23
ahead rot				8
ahead rotten		17	-9	-17
ahead rough	8
ahead round	37
ahead row		-21	5
ahead rubber	-15	29		-28
ahead rudy	15
ahead run's	35			-5
ahead runner	39	-17		-12
ahead rust	8
ahead s	15
ahead sag	11
ahead sage	-31	26	7	-13
ahead salon	5
ahead sand	9
ahead save	10	-11
ahead scrap	17
ahead scrape	29
ahead scratch	-6		16
ahead screed	20
ahead screen	12
ahead screwdriver	22
ahead scribe		10
ahead scuff	19
ahead seal	9
ahead seam	8
ahead seat	14
ahead send	-13					21
ahead setback	34	-26
ahead sewing room	-36	-35	37
ahead shave	20
ahead she	10
ahead she'd	15
ahead she'll	15
ahead she's	6
ahead sheath		12		-12
ahead shed		-5		14
ahead sheet	11
ahead shift	5
ahead shim	5
ahead ship	13	-10	5	-23
ahead shoot			16	-11
ahead shop	-27	13				11
ahead short	-11	39
ahead shot	27			-10
ahead show	12
ahead shut	24
ahead shy	-11	23	-5
ahead side	12
ahead sign	-4		14
ahead silicone		-6			16
ahead since				6
ahead sinking	-9	-5		16
ahead sir	15
ahead sister				5
ahead size	24
ahead skim	5
ahead skirt				12
ahead slab	32			-15
ahead slab's	5
ahead slid	-31			36
ahead slide	19
ahead slip	12		-11	-18
ahead slope	13
ahead smell	10
ahead snake	25
ahead snap	26
ahead snug	29			-14
ahead soft	-25	10				6
ahead soft close	23			-14
ahead solid		-16		13
ahead some				-30
ahead somebody's	27
ahead something	-9			14
ahead sound	34	-7
ahead spare			5
ahead sparky		4
ahead special	20
ahead spin	26
ahead spins	25
ahead splash	23
ahead splice	11
ahead spot	9
ahead spray	11
ahead squeak	-10			17
ahead stack		-30	6	12
ahead stagger	-5	-5		12
ahead stain	11
ahead stairs	-21			27
ahead stairwell	19
ahead staple	20	6		-29
ahead start	20
ahead static	23
ahead stay		-12	22
ahead steam	-15			19
ahead step				12
ahead steps	46	-21		-10
ahead stock	-11	-13	20	-10
ahead stop		16
ahead store	-32	11	-35	-38	28
ahead straight		4
ahead straighten	20
ahead strap	-11		6
ahead street	14	-16			15
ahead strike		10
ahead strong	8
ahead stub		-9		13
ahead stuff	-9	6
ahead super	20
ahead supplier	-17	9	12
ahead supply	5			-12
ahead supposed		12
ahead sure	7
ahead swap				10
ahead swear	17
ahead sweat	21
ahead sweep	29	-16	-5	-4
ahead sweet	20
ahead swing		18
ahead system	9
ahead t	15
ahead tack	15
ahead tae	11
ahead tag				8
ahead take						12
ahead talk	13
ahead tank	5
ahead tank's	20
ahead tap	18
ahead tape	16
ahead tear	8
ahead temp	27
ahead template	8
ahead tenant	12
ahead test	17
ahead text	5
ahead than	26
ahead that'll	-15	5	-27	-31	21
ahead the kid	11
ahead the lab	11
ahead the lady	-12		11
ahead the lady's	30
ahead the wrong	11
ahead the yard	14
ahead their	6
ahead then	16
ahead they	25
ahead they're	16
ahead they've	4
ahead thick	-10		-8	26
ahead thing		-11
ahead things	9
ahead think	12
ahead third		-15	10
ahead though	-6	-10			13	17
ahead through				14
ahead throw					7
ahead tie	11	-8
ahead tight	24
ahead tighten	11
ahead tile	20
ahead tile guy	-9	15
ahead time	-8		12
ahead together		-11		4
ahead tony	-24	-5	19	6
ahead too		6
ahead top	13
ahead touch	8
ahead toward	17
ahead trim				-5
ahead trip	22	-8
ahead truck	11			-6
ahead try			7
ahead tube	-15			21
ahead tubes		8
ahead u	22
ahead underneath	14
ahead understand	21
ahead unit		-7				23
ahead unopen	-16			-6		25
ahead upper				9
ahead upstairs	17
ahead us		13
ahead use				17
ahead van	-24	-15	33	-22
ahead vent	-10			9
ahead walk					13
ahead wall's	22
ahead walls	21
ahead walnut	21
ahead wash	19
ahead waste	18
ahead water proof	-17		20
ahead wax		23		-7
ahead we'd	-22	28
ahead we'll	-5	22
ahead we're	-4		5
ahead weatherstrip	29	-21
ahead weep	15
ahead weight	32	-6
ahead weld		-15	17	-6
ahead were	42			-6
ahead wet	13
ahead what's				-6
ahead when	8
ahead whether	4
ahead while	11
ahead white	-28	22	15	-6
ahead who	22
ahead who's	6
ahead whoever	24
ahead whole	10
ahead why	20
ahead wide	14
ahead will		20
ahead wind		12		-19
ahead wipe	18
ahead wire	25
ahead within	18
ahead without	-28	23	14
ahead wobble	5
ahead won't latch	4
ahead wont	19
ahead work			12	-6
ahead wouldn't		9
ahead wrong	22
ahead wrote	17
ahead x		8
ahead you	32
ahead you're		15		-5
ahead your	19
any	182	-84	-134	-76	-288	-306
area after none sentence	6
area beside nothing		-22	-11	27
area cue need	-23	28
area cue used				12
area flawed	21	-6
area left #	-23	-12	-13	40
area left about	49	-6		-40
area named before material			-6	5
area named before word	-14	-21	-9	26
area null none no		-15		10
area right #	-16			22
area says none no		-15		10
area says past before		-6	-17	15
area says past behind		-18		11
area says present behind	27			-21
area sold so false			-8
area verb null no		-15		10
area whole clause	-33	-11		39
bare after bought far	11
bare after bought sentence	30
bare after returned here	22
bare after used here	20
bare after used sentence	7
bare beside add	35			-5
bare beside am	16
bare beside are	29
bare beside bag	-17			21
bare beside bead				9
bare beside blow	17
bare beside bolt				11
bare beside borrow	19
bare beside box		6
bare beside break		6
bare beside bring		10
bare beside bubble	12
bare beside burn	4
bare beside buy	49	-38
bare beside buy b nobody	20	-8
bare beside buy b other	31	-16
bare beside buy pp person	11	-7			4
bare beside call	12
bare beside can't	7
bare beside cap	-9			18
bare beside carry	18
bare beside choose	9
bare beside clear	21
bare beside come	8
bare beside cover		-9	4
bare beside cut	6
bare beside dig	14
bare beside don't	14
bare beside drive	22			-10
bare beside drop	7
bare beside dry	13
bare beside dump	13
bare beside ease	6
bare beside eat	32			-10
bare beside figure	10
bare beside find	4
bare beside finish	6
bare beside fix	20
bare beside flash	14
bare beside forget	26
bare beside fre	26
bare beside get	15
bare beside give	31
bare beside go	11
bare beside gotta	5
bare beside grind	22
bare beside guess	33	-20
bare beside hang	13
bare beside has	17
bare beside have	7
bare beside have b nobody	42		-17
bare beside have b other		8
bare beside have b person	14
bare beside head	6
bare beside hum	10
bare beside i'll	9
bare beside is	15
bare beside knock	8
bare beside know			11
bare beside lay	36
bare beside leave	8
bare beside level				10
bare beside like	11
bare beside look	5
bare beside match	7
bare beside measure	7
bare beside measure bp nobody	-7				19
bare beside measure bp other	14
bare beside measure bp person	11
bare beside measure bpp nobody				8
bare beside measure i person	6
bare beside measure pp person	16
bare beside measure s person	11
bare beside meet	11
bare beside miss	21
bare beside mount	11
bare beside move i nobody	20
bare beside move i other	7
bare beside move i person	11
bare beside move p other	23
bare beside move pp nobody	21
bare beside move pp person	8
bare beside move s other	20
bare beside need	11
bare beside need b nobody	26	-10
bare beside need b other	16	-32
bare beside need b person	7
bare beside need s nobody		11
bare beside need s other	10
bare beside notch	6
bare beside oil	18
bare beside open	18
bare beside order		11
bare beside other b nobody	8
bare beside other b other	7
bare beside other b person	23
bare beside other i nobody	-4	11
bare beside other i person	12
bare beside other p nobody	24
bare beside other p other	10
bare beside other pp nobody	24
bare beside other pp other	20
bare beside other pp person	17
bare beside other s person	9
bare beside owe		9
bare beside own	14
bare beside pack	-16			20
bare beside paint				14
bare beside pass				4
bare beside patch	13
bare beside pick	37
bare beside pitch	4
bare beside place	35			-7
bare beside plane	9
bare beside plug	-10			21
bare beside pop	19
bare beside pour		11
bare beside prime				11
bare beside pull	12
bare beside redo	21
bare beside reset	17
bare beside return	-39		30			19
bare beside run	5
bare beside save	-9		16
bare beside say b nobody	14
bare beside say b person	28
bare beside say pp other	5
bare beside say s person	22
bare beside scrape	4
bare beside screw	46			-14
bare beside scribe	-6	16
bare beside see b other				12
bare beside see b person	10
bare beside send	15
bare beside shave	13
bare beside show	12
bare beside shut	4
bare beside sign	-20		24
bare beside sister		-15
bare beside skim	7
bare beside snap	11
bare beside snug	12
bare beside square	13
bare beside squeak	6
bare beside stack	37			-24
bare beside stand	16
bare beside stay	25
bare beside stick	26
bare beside stop		8
bare beside straighten	18
bare beside strip	22
bare beside supply	-8	16
bare beside swap	23
bare beside tack	15
bare beside take						17
bare beside tape	19
bare beside think	8
bare beside throw	32	-12
bare beside tie	10
bare beside tighten	6
bare beside turn	14
bare beside undefined has other	13
bare beside undefined has person	12
bare beside undefined is nobody	20
bare beside undefined is other	23
bare beside undefined will other	23
bare beside undefined will person	9
bare beside use	11
bare beside use b other	18
bare beside use pp person	22			-14
bare beside wait	18
bare beside walk	22
bare beside want	12
bare beside weep	6
bare beside will	11
bare beside wipe	8
bare beside won't	14
bare beside wont	19
bare beside work	16
bare beside work bp nobody	13
bare beside work bp other	17
bare beside work bpp nobody	6
bare beside work bpp person	17
bare beside work i nobody	8
bare beside work i other	9
bare beside work i person	15
bare beside work p nobody	35
bare beside work pp nobody	7
bare beside work pp person	18
bare beside wouldn't	7
bare beside wrap	6
bare buy imperative behind		6
bare buy owed before	-18	25	-9	-9
bare buy owed behind	14
bare buy past behind	32	-13
bare cue bought	15
bare have imperative behind	8
bare have present behind	8
bare left &	-10	10
bare left '	9
bare left (	35	-11
bare left -	20
bare left /	25
bare left @	10
bare left Q	9
bare left T	12
bare left a	20
bare left about	24
bare left above	7
bare left after	29
bare left again	7
bare left against	19
bare left all	30			-8
bare left along	19
bare left already	31	-6
bare left and	16
bare left around	9
bare left attic	12
bare left bath	11
bare left bathroom	9
bare left be	30
bare left bedroom	8
bare left before	20
bare left behind	13
bare left bend	7
bare left blow	15
bare left box	15
bare left break	24
bare left buy	41	-28
bare left can't	6
bare left caulk	13
bare left choose	9
bare left clean	14
bare left clear	15
bare left closet	8
bare left come	-5				16
bare left dead	8
bare left dining room	10
bare left do	35
bare left don't	7
bare left down	10
bare left drop	8
bare left each	12
bare left em		8
bare left except	5
bare left fill	5
bare left finish	16
bare left fit				13
bare left for	25
bare left glue	9
bare left good	18
bare left gotta	4
bare left half	-15		20
bare left hang				-9
bare left has	27
bare left have	35
bare left he	5
bare left hit	12
bare left how	12
bare left i	10
bare left i'll	4
bare left i'm	28	-8
bare left if	6
bare left in	10
bare left inside	28	-11
bare left into	6
bare left it	20
bare left it's	11
bare left its	7
bare left job	-7			12
bare left just	20
bare left kill	6
bare left last				6
bare left laundry	12
bare left lay	38			-8
bare left leave	10
bare left lift	7
bare left like	13
bare left master bath	8
bare left me	13
bare left measure	7
bare left meet	11
bare left miss	36
bare left near	8
bare left need	17
bare left nobody	8
bare left not	17
bare left office	11
bare left on	19
bare left once	13
bare left only	41
bare left open	10
bare left opened up	5
bare left or		11
bare left order		9
bare left out	24
bare left outta	23
bare left pack	43			-21
bare left paint	18
bare left pantry	21
bare left pass				10
bare left pick	6
bare left plane	4
bare left plug	13
bare left pop	4
bare left porch	11
bare left prime	-15			18
bare left pull	19
bare left replace	6
bare left right	-15	20
bare left ring	15
bare left roll	6
bare left round	10
bare left screw	28			-18
bare left scribe	9
bare left seal	8
bare left send	28
bare left she	9
bare left shim	5
bare left short	28	-15		-6
bare left shut	9
bare left since	15
bare left sit		11
bare left so	9
bare left split	9
bare left start	6
bare left stick	21
bare left strip	20
bare left swap	9
bare left take	-7			-14		32
bare left than	6
bare left that	18
bare left that's	47	-7		-6
bare left the	11
bare left the wrong	12
bare left them	15
bare left then	9
bare left there	29
bare left there's	19
bare left through	35			-6
bare left time	9
bare left too	22
bare left top		8
bare left touch	5
bare left toward	5
bare left turn	12
bare left under	11
bare left until	17
bare left use	5
bare left way	8
bare left we	13
bare left where	7
bare left which	8
bare left why	13
bare left will	7
bare left without		5
bare left won't	9
bare left wouldn't	7
bare left your	10
bare list have	39
bare list need	-11	16
bare list used	28			-11
bare measure imperative behind					11
bare measure modal before	6
bare measure modal behind		14
bare measure owed before	5
bare measure owed behind	8
bare measure past before			8
bare more	6	-8
bare move modal before	8
bare move owed before	-9		24
bare move past behind	32
bare move present before	28
bare move present behind	15
bare named here area	16
bare named here defect	27
bare named here finish	5
bare named here fixture	9
bare named here role	15
bare named here surface	9
bare named here word	17
bare named here work	25
bare nameless	30
bare need modal before	28	-12
bare need modal behind	5
bare need owed before	11
bare need owed behind	8
bare need past before		8
bare need past behind	9
bare null copula before	14
bare null imperative behind	7
bare null modal before	28
bare null none no	9
bare null owed before	21
bare null owed behind	16
bare other copula before	4
bare other imperative behind	13
bare other modal behind	14
bare other owed before	7
bare other owed behind	28
bare other present behind	11
bare right &	-12	26		-11
bare right '	12
bare right (		-16	-5			22
bare right +		11		-21
bare right /	6	-27	11	-20
bare right @	44
bare right Q	29
bare right T	40
bare right a	8
bare right again	5
bare right ain't	10
bare right all	10
bare right along	23
bare right already	-4		16
bare right another	16
bare right are	8
bare right aren't		9
bare right arrive	25
bare right back	14
bare right bag	23
bare right behind	25
bare right below	6
bare right bolt	17
bare right box	17
bare right break	12
bare right bring	30	-7
bare right burn	9
bare right can't	10
bare right caulk	7
bare right center	7
bare right change	29			-14
bare right clean	8
bare right clear	7
bare right complete	30	-11
bare right crush	7
bare right cut			6	-7
bare right dig	7
bare right don't			7
bare right down	50
bare right drill	7
bare right dry	11
bare right dump	7
bare right every	26
bare right fill	12
bare right fine	10
bare right finish	26
bare right fit				8
bare right fix				5
bare right flash	7
bare right get	13
bare right give	15
bare right glue	7
bare right go	20
bare right gonna	22	-6
bare right good	26
bare right grout	7
bare right hasn't	-11	15
bare right have	21
bare right head		-12		10
bare right her	5
bare right here	-5	-5	21
bare right him	12
bare right hold	21
bare right i	-5		19
bare right if	9
bare right is	13
bare right isn't	9
bare right it's	12
bare right just	19
bare right keep	4
bare right lay	22
bare right leave	12		-15
bare right lift	5
bare right make	7
bare right me	17
bare right mount	6
bare right move	10
bare right my	15
bare right need	17
bare right never				12
bare right next		11
bare right no	6
bare right not	4
bare right nothing	9
bare right of	38
bare right off	12
bare right on	5
bare right only	11
bare right open	20
bare right order	39				-6
bare right out	24
bare right over	25
bare right pack	-11	17
bare right pass	10
bare right peel	-10	19
bare right pin	7
bare right pitch	4
bare right read	6
bare right replace				8
bare right return	7
bare right right	8
bare right rip	6
bare right rock	6
bare right roll	-17		23	-12
bare right rough	8
bare right run	15
bare right say	8
bare right screw	14
bare right seal	17
bare right send	24
bare right set	14
bare right short	39	-12
bare right shot	-12	19
bare right since	9
bare right sit	12
bare right snap	9
bare right so	7
bare right somebody	15
bare right squeak	10
bare right stand	17
bare right stay	12
bare right still			11
bare right stretch	18
bare right strip	9
bare right stuff	-7	7
bare right swap	4
bare right take	21
bare right tape			15	-13
bare right tear	25
bare right test	16
bare right than	6
bare right the	24
bare right them	5
bare right there		7
bare right they	-5		24
bare right those	9
bare right til	12
bare right to	10
bare right too				4
bare right top	13
bare right toward	6
bare right turn	20
bare right under	37
bare right up	24
bare right use	9
bare right want	4
bare right we	19
bare right were	14
bare right what	14
bare right when	20
bare right where	14
bare right which	8
bare right while	10
bare right will	22
bare right wire	14
bare right wobble	10
bare right wont	6
bare right you	8
bare say imperative behind	27
bare say owed behind	8
bare say past before	31
bare say past behind	9
bare say present before	12
bare says copula before	7
bare says copula before not	4
bare says copula behind	6
bare says imperative before	7
bare says imperative behind not	23
bare says modal before	25
bare says modal before not	10
bare says modal behind	4
bare says none no	7
bare says none no not	24
bare says owed before not		5
bare says past before not	12
bare says present before	6
bare says present before not	15
bare says present behind	10
bare see imperative behind	11
bare see modal behind				10
bare see owed behind	9
bare see past before	7
bare see past behind			10
bare see present before	5
bare then buy b	-8	-36			45
bare then have b			14
bare then have pp	13
bare then measure b	18
bare then measure bp	20	-11
bare then measure i	30
bare then measure pp			7
bare then measure s	12
bare then move i	5
bare then move p	7
bare then move pp	17
bare then move s	4
bare then need b	34
bare then need pp	15
bare then need s	9
bare then other p	5
bare then return s	7
bare then say pp				5
bare then say s	11
bare then see b	7
bare then see pp	7
bare then undefined will	22
bare then use pp	9
bare then work i	23
bare then work pp	16
bare then work s	25
bare use past behind			9
bare use present behind	30			-21
bare verb add behind	33
bare verb adjust before	14
bare verb arrive before	29
bare verb be before	5
bare verb bind before	5
bare verb blow before	7
bare verb blow behind	16
bare verb box before	21
bare verb box behind	-8	18		-8
bare verb break behind	28
bare verb bring before		-9	16
bare verb bring behind		11
bare verb buy behind	6
bare verb buzz before	6
bare verb call behind	13
bare verb can behind	19
bare verb cap behind	29			-11
bare verb catch before	5
bare verb caulk before	5
bare verb caulk behind	14
bare verb change before	29			-11
bare verb clean behind	11
bare verb close behind	22
bare verb count behind	23
bare verb crack before	-15	13		5
bare verb crack behind	8
bare verb cup before	11
bare verb cut before	-6	12
bare verb cut behind	5
bare verb dig behind	7
bare verb do before	19
bare verb don't behind	12
bare verb drain before	8
bare verb drill before	10
bare verb drill behind	19
bare verb drive behind	20			-6
bare verb drop behind	6
bare verb dry before	-7		18
bare verb dump before	24
bare verb ease behind	11
bare verb end behind	14
bare verb figure behind	24	-8
bare verb finish before	13
bare verb finish behind	10
bare verb fit before				12
bare verb fit behind				10
bare verb fix behind	14
bare verb flush behind	13
bare verb forget behind	14
bare verb frame before	14
bare verb frame behind	13
bare verb fre behind	26
bare verb freeze before	12
bare verb get behind	16
bare verb give behind	20
bare verb glue before	9
bare verb glue behind	19
bare verb go behind	10
bare verb grab behind		5
bare verb grind behind	19
bare verb grout before	9
bare verb guess behind	32	-18
bare verb hang before				15
bare verb hang behind	8			-14
bare verb have behind	8
bare verb hold before	7
bare verb i'll behind	14
bare verb know behind			15
bare verb latch before	5
bare verb lay before	37	-19
bare verb lay behind	43
bare verb leak before	4
bare verb leave behind	15
bare verb level behind	-9			17
bare verb lift before	13
bare verb lift behind	6
bare verb like behind	26
bare verb listen behind	14
bare verb make behind	-6
bare verb miss before	19
bare verb miss behind	30
bare verb move before	13
bare verb move behind	5
bare verb mud before	16
bare verb nail before	5
bare verb nail behind	10
bare verb need behind	11
bare verb null before	14
bare verb null no	9
bare verb open before	11
bare verb open behind	13
bare verb order behind		9
bare verb paint before	15
bare verb pass before	8
bare verb patch behind	24
bare verb pick behind	26
bare verb pitch before	9
bare verb place behind	44			-24
bare verb plane behind	7
bare verb plug before	7
bare verb plug behind				12
bare verb pour behind	-8	15
bare verb prime behind				11
bare verb pull behind	5
bare verb put before	23
bare verb put behind	12
bare verb rattle before	5
bare verb read before	11
bare verb redo behind	28
bare verb remind behind	18
bare verb replace before				6
bare verb reset behind	19
bare verb return before	15
bare verb rip behind			7
bare verb rock before	6
bare verb roll behind	9
bare verb rough before	8
bare verb run before	13
bare verb sand behind	7
bare verb save behind	-8		16
bare verb say before	15
bare verb scrape behind	4
bare verb screw before				16
bare verb screw behind	44			-7
bare verb scribe before	23
bare verb scribe behind	16
bare verb seal before	17
bare verb seal behind				5
bare verb seat before	9
bare verb send before	-18	17	7
bare verb set behind	7
bare verb shim before	15
bare verb show before	-12		16			7
bare verb show behind	12
bare verb silicone before	19
bare verb silicone behind	15
bare verb sister behind		-8		21
bare verb sit before	5
bare verb skim behind	4
bare verb slide behind	4
bare verb snap before	15
bare verb snug behind	6
bare verb split behind				6
bare verb stain before		9
bare verb stand before	20
bare verb stand behind	14
bare verb stay before	8
bare verb stay behind	17
bare verb stick behind	14
bare verb stop behind	31
bare verb straighten behind	20
bare verb stuff behind	-10	5		7
bare verb supposed before	23
bare verb swap behind	23
bare verb tack behind	13
bare verb take before	29
bare verb take behind	-5					33
bare verb tape behind	23
bare verb tell before	17
bare verb tell behind	10
bare verb test before	6
bare verb text behind	7
bare verb throw behind	29	-4
bare verb tie before	15
bare verb tie behind	12
bare verb tighten behind	6
bare verb tile before	5
bare verb touch behind	5
bare verb trim before	9
bare verb trim behind	23
bare verb trip before	11
bare verb turn before	7
bare verb turn behind	6
bare verb use before	4
bare verb walk behind	23
bare verb want before	13
bare verb weep before	5
bare verb will behind	11
bare verb wire before	17
bare verb wobble before	12
bare verb work before	11
bare verb wouldn't behind	-15	20
bare work imperative before	7
bare work imperative behind	8
bare work modal before	19
bare work modal behind	16
bare work owed before	9
bare work past before	17
bare work present before	27
bare work present behind	9
beside add				6
beside add Q	-10			18
beside add b nobody	16			-22
beside add b other		5		-6
beside add pp nobody	-34	-14	-6	37
beside am	16
beside am is person	16
beside are Q	27
beside are all	-12		17
beside are in				18
beside are on	-17			29
beside are up	9	-12	-9
beside arrive	-16		19	-9
beside arrive pp other	-23	5	21	-12
beside ask b other	-10	15
beside ask the	-6	14
beside bag				6
beside bag b other	-17			21
beside balance	-31		20	4
beside be G	14
beside be a	-6		11	-7
beside be b person		13		-16
beside be in	8
beside be no	8
beside be off	7
beside be out	10
beside be p other	9
beside be p person		5
beside be the				8
beside be up	17
beside bead	-6	8
beside bead b other	-6	8
beside bed	9	-8	-10
beside bend	25
beside bend b nobody	15
beside blow	18
beside blow Q		-9		7
beside blow p other	10
beside blow p person		-13	-11	7
beside bolt	-17	-9		29
beside bolt pp other	-16	-11		28
beside borrow	19
beside box		9
beside box b nobody	17
beside box s other	-15	22		-7
beside break	-8	19
beside break in	17
beside break p other		13
beside break the	16
beside bring		20
beside bring Q	-7	27
beside bring a		15
beside bring b nobody	-7	25
beside bring b other		7
beside bring b person				-7
beside bring back	-17		4	-8		15
beside bring i other	6	5	-10	-11
beside bring me	-30	38
beside bring the	15	-6
beside bubble	12
beside bubble b other	15
beside build		-8		8
beside burn	-7			36
beside burn Q	-20	-7		30
beside burn pp person	-25			41
beside burn through	-15			29
beside bury	6
beside bury pp other	4
beside buy					9
beside buy G	18	-5
beside buy Q		11
beside buy a	-16	-5		-11		17
beside buy b nobody		25
beside buy b other	6
beside buy b person	-8		-9	-8	35
beside buy i person	-21	33
beside buy pp nobody	-13	-48	-28	-28	56
beside buy pp other	-22	-23	-20	-26	-16	38
beside buy pp person	-37	-35		-9	49
beside call	17
beside call b other	20
beside call b person	5
beside call for	30
beside call him	24	-20		-8
beside call i person	15
beside call it		9		-13
beside call pp other	-11			17
beside call s other	30
beside can G	10
beside can will other		-14	-8	11
beside can will person	7
beside can't	7
beside can't will person	9
beside cap	-32	-12		40
beside carry	18
beside change				12
beside change Q	-7	11
beside change b nobody	21			-21
beside change b person	-15			19
beside change pp nobody	-20			26
beside change pp other		9	-11
beside change the		-15		17
beside check	15
beside check b other	13
beside check it	8
beside chip	13
beside chip on	6
beside chip pp other	14
beside choose	12
beside clean b person	4
beside clean it	-6			18
beside clean pp other	-25	-8		30
beside clean pp person	20			-7
beside clean the	8
beside clear the	15
beside close	19
beside close b person	31
beside close pp other	-4			12
beside come Q		-15	11
beside come T	-12	-26	-19	-17	40
beside come back		7
beside come bp nobody	-7				19
beside come bp other	12
beside come bp person	16
beside come down	7		-17	7
beside come for	-12		20	-17
beside come from	15
beside come i other	7
beside come i person	17
beside come in			12	-11
beside come out					9
beside come p nobody		-24	-11	-14	18
beside come p other	-5		14
beside come s other	-5	-23	-18	-21	39
beside come s person	10
beside come the	-12				20
beside come up	34	-8
beside come with	16
beside cope	24	-12
beside count	-11	4	21	-22
beside count Q	-24	13	25	-23
beside count b person		13	-23
beside cover	26	-15		-5
beside cover s other	9	-26	14	-9
beside crack	15
beside crack b other	13
beside crack pp other	10
beside crush	17
beside crush pp other	17
beside cut a				15
beside cut bpp other		-6
beside cut in	-5			13
beside cut it				13
beside cut that	19
beside cut the	31
beside dig	29
beside dig Q	13
beside dig pp other	26
beside ding	21
beside ding pp person	14
beside ding the	14
beside do G	19
beside do Q		-17	-14	15
beside do a		7
beside do b nobody	-4	9
beside do b other					12
beside do it	-16	10		5
beside do not	10
beside do p nobody			-4	13
beside do p other	21
beside do p person	8
beside do s other	7
beside do that	-5		5
beside do the					8
beside don't	17
beside don't will nobody	12
beside don't will other	8
beside doubl	24			-15
beside doubl pp other	24			-15
beside drill	19
beside drill Q	17			-6
beside drip	8
beside drip i other				10
beside drip on	19			-5
beside drive	-11			16	4
beside drive Q	-7			24
beside drive p person	-7			24
beside drop Q	-5		16
beside drop pp other	6
beside dry	13
beside dry b other	9
beside dump i other				12
beside dump right	6
beside ease	6
beside ease pp person	7
beside eat		-12		32
beside eat Q	-42	-19	-12	48
beside eat i other	19
beside eat my	17			-4
beside eat p other	-8	-16	-8	33
beside feel	12
beside feel b person	13
beside feel it	9
beside figure		18		-14
beside figure Q	-12	34	-8	-17
beside figure b nobody	-29	39
beside figure i person	-10	18		-9
beside fill				21
beside fill it	-14			24
beside fill pp nobody	-29			32
beside fill pp person	21
beside fill the	23			-12
beside fill with	-17	-16	-7	30
beside find	13
beside find a	16
beside find b other	11
beside find b person	13
beside find pp nobody	8
beside find pp person	7
beside finish				4
beside finish b nobody	-5	-12	-19	18
beside finish b other				9
beside finish b person		-5
beside finish pp person	27			-9
beside finish the	10
beside finish to	20			-4
beside fish	22
beside fit				5
beside fit Q	10	-12
beside fix				5
beside flash	21			-7
beside float		-21	-11	19
beside flush	24			-8
beside forget		9
beside forget b person	16
beside frame	16
beside frame pp other	12
beside fre	26
beside get Q			20
beside get another	17		-15
beside get b nobody		33
beside get b other		19	-15	-17
beside get i other	-5	15	-6
beside get i person	10	5	-20
beside get it	34	-20
beside get its				21
beside get maybe	-7		14
beside get me		16
beside get no	-20	23	-6		5
beside get p nobody	-14	-37	32	-15	4
beside get p person			34
beside get s other		9
beside get s person		15
beside get that	24	-10	-10
beside get the	5
beside get their			14
beside get to	10
beside give			-10		6	8
beside give b person	-22	-27	-21	12		23
beside give me				-9	16
beside give p person		-14			19
beside give the	4
beside glue				11
beside glue pp nobody	10	-7
beside glue pp other				11
beside glue pp person	-9			16
beside go Q		-30	-17	20
beside go and	-8		20
beside go b nobody		16
beside go b other	10			-4
beside go back	-4	4
beside go down	17
beside go i other	17
beside go in		7
beside go off	29			-17
beside go on		10
beside go over	26
beside go p nobody	-7	-5		30
beside go p other				16
beside go p person				14
beside go s other		13
beside go through	-14			48
beside go to	7
beside go up				10
beside gotta	10
beside gotta pull	5
beside gotta will nobody	18
beside grab Q	-20	10	-4	-14	25
beside grab a	-4	17
beside grab b nobody	5
beside grab me	11
beside grind pp other	-10			16
beside guess		8
beside hang G	25			-10
beside hang Q	-25			39
beside hang b nobody	-15		20	-16
beside hang b other		7		-17
beside hang b person				7
beside hang by	27
beside hang on	-11	11
beside hang pp nobody	-7			15
beside hang pp other	5
beside hang pp person	-5			24
beside hang s other	6			-11
beside has Q	19		-18	-12
beside has a	-6					12
beside has has person		-16	12
beside has no	24
beside have Q			29
beside have b nobody			46
beside have b person			51
beside have i person	-9	-8	25	-20
beside have let go	21		-13	-7
beside have no	16
beside have only		-8	7	-7
beside have pp nobody	25		-12
beside have pp other	6
beside have pp person	5		-15	12
beside have still	-30	-9	36	-9
beside have the	6
beside have to	37
beside hit a	24
beside hold Q	28
beside hold a	6
beside hold pp person	9
beside hold s other						13
beside hook	9
beside hum	10
beside i'll	15
beside i'll G	15
beside i'll will nobody	17
beside i've	25
beside i've has nobody	26	-7	-8
beside install	-8			16
beside insulate	22
beside is G	5
beside is Q	6
beside is a		-12
beside is all	21
beside is already	20
beside is at	11
beside is black	17
beside is down	13
beside is flat	15
beside is for		10
beside is full	13
beside is gap	5
beside is in		-16	10	-18
beside is is person	4
beside is loose	11
beside is no	10
beside is on	17
beside is only	15
beside is the	9
beside keep b nobody			12
beside kill	17
beside kill the	6
beside knock	21
beside knock pp person	16
beside know			8	-6
beside know b other	-7		16
beside land	13
beside lay				5
beside lay b person	23			-13
beside lay down	-6			11
beside lay i other	20
beside lay in	-7	10	7	-31
beside lay pp other	10
beside lay pp person	-10			20
beside lay the	31
beside leak	6
beside leak b other	10
beside leak from	10
beside leak i other	5
beside leave G	32
beside leave Q	-14	-14	44	-23
beside leave a	14
beside leave b nobody	13
beside leave b other	24		-9
beside leave corner	5
beside leave i nobody	-5	17
beside leave in	8
beside leave it		11
beside leave of	-4		16
beside leave on	16
beside leave pp nobody			9
beside leave pp other	7
beside leave pp person			9
beside leave s other	-9		15	-6
beside leave side	7
beside leave that	8
beside leave the	18
beside let	5
beside let bpp other	9
beside level b nobody	21			-4
beside lift	13
beside like Q		7
beside like a	15
beside like b person	11
beside like the	9
beside look	10
beside lose	6
beside lose b person	4
beside lose pp other	24
beside lower	15
beside lower b other	15
beside lower than	14
beside make Q	37	-21		-12
beside make a	11
beside make b nobody	-5		8
beside make b other	7
beside make b person	-7	19
beside make it	-18	21
beside make pp person	30	-7		-16
beside mark	12
beside match	19
beside match b other	9
beside measure	9
beside measure Q	22
beside measure b nobody	-5	13
beside measure bp nobody	-7				19
beside measure bp other	12
beside measure bp person	16
beside measure bpp other	12
beside measure i other	18
beside measure i person	17
beside measure p nobody		-24	-11	-14	18
beside measure p other	-5		14
beside measure pp nobody	15
beside measure pp person	-4			6
beside measure s nobody	15
beside measure s other					9
beside measure s person	11
beside meet	21
beside meet the	7
beside miss		18
beside miss Q		15		-18
beside miss a	36	-20
beside miss at	11
beside miss b person	-13	20
beside miss i other		5
beside miss i person		13
beside miss the	29
beside mix				13
beside mix Q	-6	-11	-12	22
beside mount	-7			20
beside mount pp other	23			-5
beside move			7
beside move Q	21	-10
beside move b other	25
beside move i nobody		12
beside move i other	14
beside move i person	-17	-16	28	-5
beside move it	5
beside move p nobody	-7	-5		30
beside move p other				16
beside move p person				14
beside move pp nobody			6
beside move the			10
beside nail	-6			20
beside nail pp nobody				7
beside need		18
beside need Q		15
beside need a		9
beside need an	11	-6
beside need another	-30	33
beside need b nobody		30
beside need b other		6
beside need b person		17
beside need i person		22	-12	-23
beside need more		16
beside need pp other		-5	13	-9
beside need pp person	29	-6
beside need qt	-26	33
beside need s person		6
beside need the	-10		22	-9
beside need to	23	-5
beside nick	28
beside nick pp other	25
beside nick pp person	9
beside nick the	10
beside notch	17
beside oil	17
beside open Q	-9	-25	-21	24
beside open b other			17
beside open b person				4
beside open pp other	20
beside open pp person		-10	-12	6
beside open the	19
beside order		16			5
beside order G	7	-18			21
beside order Q		21
beside order a	11	-11			10
beside order b nobody		18
beside order b person					6
beside order i person	-35	38
beside order pp nobody	-16	-21	-6	-13	34
beside order pp person		-12			27
beside order the	-14	17
beside other b nobody		32
beside other i nobody	-27	38
beside other i person	5
beside other p nobody	-6	-32	14	-10
beside other p person			14
beside other pp nobody	-21	-31		-34	40	12
beside other pp other	12
beside other pp person		-13				12
beside other s nobody	29			-6
beside other s other	19
beside owe	-22	30	-15	-22	12
beside owe b person				-7	17
beside own	21			-7
beside pack	-15			24
beside pack b nobody	-10	19		-16
beside pack it	-4	18		-27
beside pack pp other		-13	-9	11
beside pack pp person				7
beside pack the	7	-5
beside paint pp person	11
beside paint the				10
beside pass pp person	13
beside pass the				9
beside patch b nobody	-10	17
beside patch pp nobody	16			-9
beside peel	21
beside pick				-5	16
beside pick b nobody		23
beside pick b person	-5	12		-8
beside pick me	-19	31
beside pick pp nobody	-20	-30	-14	-11	42
beside pick pp person		-19		-5	21
beside pick up	-7			-15	29
beside pitch	4
beside place	-5			15
beside place b nobody	-13	-8		21
beside plane	14
beside plane b nobody	16
beside plane the	10
beside plug				12
beside plug pp person				8
beside plug the				4
beside plumb	20			-11
beside point	20
beside point Q	20
beside point b other	16
beside pop	22
beside pop the	6
beside pour				9
beside pour Q		-8	-11	23
beside pour pp other	17		-8
beside prime	7
beside prime b person	21
beside prime pp nobody	-13			16
beside prime pp other	13			-14
beside prime the	-12			16
beside pull	9
beside pull Q				12
beside pull pp nobody	23
beside pull pp person				9
beside pull the	9
beside push	6
beside push a	4
beside push b person	4
beside put				21
beside put G	-31	13		7
beside put Q				13
beside put a		6		6
beside put bpp nobody	-5			19
beside put bpp other	-6			7
beside put bpp person				15
beside put down	-9			16
beside put i person		20		-23
beside put in	-11	-10		28
beside put it	-27		4	25
beside put new	-14	-27		26
beside put on	-35	-7		38
beside put that	20
beside put the	13			-5
beside put with	19
beside quit	11
beside quit bpp other	10
beside quote	21	-4
beside raise	15
beside raise b nobody	15
beside rate	7
beside rate Q	7
beside read	19
beside read Q	19
beside read bpp other	23
beside read i other	10
beside rebuild	-25	-13		34
beside redo	-9		-10	19
beside relay				12
beside relay Q	-18			21
beside relay pp other	28			-16
beside replace				9
beside replace Q	-8	13	-18
beside replace pp nobody	-27			37
beside replace pp other	5	15	-4	-32
beside replace pp person				4
beside replace the	-5			14
beside reset		-11		13
beside reset bpp nobody		-14		19
beside reset it	-6	-17		22
beside return	-14			-22		23
beside return Q	11	-19	-22	-15		15
beside return b nobody		23	-30	-18		-30
beside return b other	37	-9	-10	-7
beside return pp nobody	-49	-25	-30		-6	49
beside rip b other	27	-11
beside rip b person	-10		15
beside rip pp other	13
beside rip pp person	-5			14
beside rod	26			-16
beside rod pp nobody	16			-8
beside roll	15
beside roll b other	9
beside roll b person	16
beside roll pp other	7
beside roll pp person	4
beside rot	11
beside rot pp other	10
beside run G	9
beside run Q				28
beside run a		6
beside run bp nobody		12
beside run bp person	-10	15	-10
beside run i other	21
beside run it	14
beside run out	36
beside run p nobody		-13		7
beside run p other	29			-18
beside run p person				10
beside run the	18
beside rust	9
beside rust b other	11
beside sag	8
beside sand				-6
beside save			10
beside say Q	22
beside say b nobody		9
beside say b person	4
beside say i person	10
beside say pp other	6
beside say pp person	37	-6
beside say s person	-7	20
beside scrape	22
beside scrape pp person	7
beside scratch	-6		16
beside screw	-14			30
beside screw Q	-15	-16	-5	26
beside screw pp nobody	-18			25
beside screw pp other	6
beside scribe		16
beside scribe a	25	-8
beside scribe b person	26	-6
beside scribe the	7
beside seal b person	6
beside seal pp nobody	16
beside seal pp other	-16			23
beside seal pp person	-6			12
beside seal the	18
beside see b nobody	8
beside see b other				18
beside see b person	13
beside see it	9
beside see s other	22
beside send	-30					27
beside send Q	-39	14		-16		21
beside send a		10
beside send pp other	-16	-10	9			16
beside send pp person		-12	8			11
beside send the	24
beside set	9
beside set Q		-11	-17	16
beside set bpp nobody	28			-17
beside set bpp other	5
beside set bpp person		-7		11
beside set in	21
beside set it		-4
beside set the	11
beside shave	13
beside shave the	13
beside shim	22			-7
beside shim pp person	21			-13
beside shim the	21			-13
beside ship	7	-11	9	-20
beside show	14
beside shut	22
beside shut the	9
beside sign	-14		21
beside sign pp person	19
beside sister Q	28			-33
beside sister a	-26			32
beside sister b nobody				-5
beside sister pp person		-7		5
beside sit Q	16
beside sit b other		7
beside sit flat	-18	24
beside sit i other	22
beside sit i person	4
beside sit in	12
beside sit on	20
beside sit pp other			10
beside sit s other	7
beside size	17
beside size b nobody	20	-10
beside skim	11
beside skim pp nobody	10
beside slide	8
beside slide b person	8
beside snake	23
beside snap	20
beside snug	26			-16
beside split	5
beside split bpp other	23
beside split bpp person				9
beside split the	16
beside spray	21
beside spray both	21			-8
beside spray pp other	22
beside squeak	6
beside stack	-13			21
beside stand i other	5
beside start	21
beside start b nobody	5
beside start b person	21
beside stay		-15	23
beside stay b nobody		-19	19	-9
beside stay b other	-12		17	-5
beside stick a	-19	6		17
beside stick b nobody	31	-12		-14
beside stick b person				-4
beside stick out	7
beside stick pp other	10
beside stick pp person	-8			12
beside stick s other	7
beside stop	-9	21
beside stop b other	-25	30
beside straighten	18
beside strip b other	-5		5
beside strip of		12
beside strip pp other	9
beside stuff	-21	15
beside stuff b nobody	-8	9
beside stuff the		-11		5
beside supply		7	-6	-14
beside swap	-7			20
beside swap b nobody		21		-25
beside swap b other	13
beside swap pp nobody	-16	-12		26
beside swap pp other	-23	-18		29
beside swap pp person	-5	-10		21
beside swap that	23			-9
beside swap the	8
beside swing	-8	22		-8
beside swing b person	-13	24		-10
beside swing by	-20	27		-14
beside tack	15
beside take						8
beside take Q	-7			23
beside take a	41	-20		-6
beside take b nobody	10	-21
beside take b other	-13	14	8	-12
beside take b person	-8			6
beside take me	16	-12	-13
beside take out	36	-12		-23
beside take p nobody	-17		-23	-26		35
beside take p other	5	-9	-13	19
beside take p person	-16			-13		35
beside take s other	11		-12
beside take that	-12			-5		22
beside take the	-10		-4	-14		38
beside tape	13
beside tape it	8
beside tape pp nobody	7
beside tape pp other	5
beside tape pp person	6
beside tear	8
beside tear p other	10
beside tell b nobody	-4	15
beside tell pp person	14
beside test	17
beside test Q	4
beside test pp nobody	11
beside test with	11
beside text	8
beside think b person			9
beside throw		6
beside throw a	-28	16		11
beside throw b nobody		22
beside throw p person	-18	-12		33
beside tie				5
beside tie pp other	15
beside tie pp person	-5	-9		12
beside tighten	30			-16
beside tighten the	23			-11
beside tile	17
beside top G	28	-6		-20
beside top b nobody	17
beside touch	9
beside touch i other	9
beside trip	23	-14
beside try			8	-4
beside try b nobody	-33	11	22
beside try pp person	28		-12	-5
beside turn b other	-11	-18		21
beside turn out	15
beside turn s other	12
beside undefined has nobody	25
beside undefined has person		-20	11
beside undefined is person	11
beside undefined will person	16
beside use				20
beside use Q				13
beside use a	-15			32
beside use about			-7	16
beside use b nobody	-26	-10		36
beside use b other	27
beside use b person	-4
beside use pp nobody				28
beside use pp other				28
beside use pp person				25
beside use the	14
beside use up	-32			41
beside wait b other	9
beside wait b person	16
beside wait on	-22	29
beside walk					14
beside want G	33	-20
beside want Q		13
beside want another	15	-10
beside want b nobody	13			-11
beside want b other	30	-15
beside want b person		30
beside want it	19	-10
beside want pp person	29	-6
beside want s person	11
beside want the	25	-5
beside want water	12
beside wash	19
beside wash b person	4
beside wash the	13			-5
beside weep	6
beside weep i other	5
beside were	30			-9
beside were is other	30			-11
beside will glue	-7	14
beside wipe	18
beside wipe the	14
beside wire	19
beside wire pp other	19
beside won't	14
beside wont	19
beside work	32
beside work bp nobody		12
beside work bp person	-10	15	-10
beside work bpp nobody				12
beside work bpp person				7
beside work i nobody	15
beside work i other	31
beside work i person				-15
beside work p nobody		-10		6
beside work p other	14
beside work p person				10
beside work pp nobody				24
beside work s nobody	24
beside work s person	26
beside wouldn't	9
beside wouldn't will other	8
beside wrap pp other			14	-10
beside wrap with			14	-11
bound atLeast		5
bound atMost	6
bound over	34
bound under	20	-6
code	-43	10		24
count after bought far			6	-27
count after bought here			-9	-9	5
count after bought sentence	-41	-17	10		31
count after have far		26		-25
count after have here	-13		22	-31
count after have sentence	-10	20	9	-17
count after need here		30		-6
count after need sentence	-5	30		-13
count after returned far	-38	16	13
count after returned sentence	-43		-29	-31	29	22
count after used far	-6	25
count after used here		-12		14
count after used sentence	-17		7
count beside are	-26			34
count beside be	41
count beside blow	33			-14
count beside bring	-10	10				7
count beside buy		12
count beside buy b nobody		5
count beside buy pp nobody	-13	-16	-4		29
count beside buy pp person	-35	-24	-15	-12	40
count beside call	45	-17		-5
count beside change	-10	-24	-13	30
count beside come	-25	-18	10		16
count beside count		-29	13	-14
count beside cut	-11		15
count beside do	11	4		-18
count beside drill	18			-10
count beside drive	-26	-4		33
count beside eat	-21	-15	-9	29
count beside give	-22		-20	-28	20	20
count beside glue	-12	-6		20
count beside go	-7			13
count beside grab	11	-10		-6	12
count beside hang	-23			32
count beside has			-34
count beside have		-18	13
count beside have b nobody	-25	-16	41	-8
count beside have b other	17			-17
count beside have b person	-4	-6	33	-9
count beside have pp other	37		-23	-28
count beside have pp person		-20	-10	20
count beside hit				10
count beside hold	-10					15
count beside leave	-12	-24	28	-26
count beside like		15		-12
count beside make	-5	13		-13
count beside measure bp other	37		-19	-11
count beside measure i other	14
count beside measure i person	8
count beside measure p other	-35	-14	25	9
count beside measure s other		-5			11
count beside miss		22		-23
count beside mount	-20		-11	26
count beside move		-26	19	-21
count beside move b other	16			-21
count beside move p other	-11			22
count beside move s other	-25	20	9
count beside nail		-6	-6	5
count beside need		27
count beside need b nobody		17
count beside need b other	-4	20
count beside need b person	-5	39
count beside need s nobody	27	-17
count beside need s other	23	-18		-9
count beside nothing	-9
count beside open	-6	-23	23	-32
count beside order	-7				21
count beside other b nobody		42
count beside other b other		12
count beside other b person		14	-19			4
count beside other i other	22		-4	-31
count beside other i person		12		-6
count beside other p nobody	-21	-31	28	-31		22
count beside other p other	11
count beside other p person		-34
count beside other pp nobody	-49	-11		-24	31	24
count beside other pp other	21	-15		-11
count beside other pp person	-10	-32	-31	-15	4	29
count beside other s other	7
count beside paint	18			-12
count beside patch		18		-14
count beside pick	-14	7		-17	21
count beside point	21
count beside pull	33			-27
count beside put	-18	-15	-8	46
count beside rate	5
count beside read	21
count beside replace	-24	10	-16	18
count beside return	19	-18	-18	-6
count beside rip				13
count beside roll	14
count beside run	-9			21
count beside sand				-10
count beside say			16
count beside say b nobody		5		-9
count beside say b other	30	-37	15	-7
count beside say pp person	24	-6
count beside see	23			-7
count beside send	-54			-24	-6	39
count beside set			-6
count beside sister	20	12		-39
count beside swap	-10	6	-5	8
count beside take		-27	-8			23
count beside throw	-29	18	-15	6
count beside top	12
count beside turn	31			-8
count beside undefined has other			-34
count beside undefined is person	28
count beside use				12
count beside use b person	-10	13
count beside use pp nobody				18
count beside use pp person				24
count beside want	12
count beside were	23			-11
count beside work b nobody	-6	14		-6
count beside work b other		21		-18
count beside work b person	-16			9
count beside work bpp nobody	-16		-10	34
count beside work bpp person	-12	-8		18
count beside work i other	18		-10
count beside work p nobody		-12		12
count beside work p other		-15	-15	9
count beside work pp nobody	-10			45
count beside work pp person	10	-12		9
count beside work s other	19			-5
count buy imperative behind		10
count buy past behind	-22	-31	-14	-12	51
count cue ate		-20				24
count cue back	-16			-11		60
count cue bought	-43			-28	40
count cue came	-30		18			28
count cue have	-24		80
count cue lacks	-32	14		15
count cue need		43
count cue used	-10			53
count flawed	26
count have present before	22			-12
count have present behind			21
count kept	-21	-6	50
count left #	-29			17
count left (	-24		-11	23		10
count left +	-33	21		16
count left -				-7
count left N	34	-17		-13
count left Q			7
count left T			5
count left about			12	-7
count left all		-15		26
count left and	-17	12
count left are	30	-5		-12
count left at	65
count left back	-24	-27		-7		27
count left be	44
count left between	28	-17
count left bring		14
count left buy	-29	23			15
count left by		16		-25
count left change		-12		11
count left cut		6		-9
count left down	-25		-8	30
count left drill	19			-12
count left drive	-9	-9		26
count left for	9	4		-30
count left from	14			-9
count left get	-8	8	7
count left go		-22	-5	11
count left grab	-4		-5	-5	19
count left hang	-26	-12		35
count left has		9	-18	-17
count left have		-13	9
count left i'm	5		-8	-14
count left in		-21	-15	33
count left is	6
count left it	15		-13	-12
count left it's	4	4		-26
count left last	15	-10	-5
count left like	-11	24		-7
count left maybe	-19	-16	36	-27
count left me	-32	19	11	-13	9
count left miss		9		-16
count left need		17
count left now		-16		7
count left of	45		-33	-41
count left on	-6		-12	34
count left only	-6	-30	31	-18
count left order	-49	35			6
count left other				-12
count left out	-8	-7	-5	22
count left over	22			-11
count left past	21
count left point	21
count left pull	17	-29	-17	-37		21
count left put		-8		17
count left rate	5
count left read	20
count left replace	-8	13	-18
count left return	16	-16	-18	-5
count left run	13	-8
count left say	30
count left set		-4	-18	16
count left short	-33	23	9	-20
count left take	-26	-20	-39	32		11
count left that's	-30	14	-7	17
count left then	26			-14
count left there's	-15	-41	42
count left those	14	-10
count left through	7		-7
count left throw	-29	18	-15	6
count left to	5	-18	14
count left under	12
count left up	-32		-8	9	22
count left use	-26			29
count left want	4	7
count left we're	12		-13	-15
count left with	-34			35
count list have	-46	-44	49	-37
count list need	-20	28	-28	-44		15
count measure owed behind	-8		11
count measure past behind					16
count measure present before	19		-9	-27
count measure present behind	6				8
count more	-19	38		-11
count move imperative behind	28	-7		-10
count move past before			46	-14
count move past behind	-22		21
count move present behind		17	-19	-32
count name flawed	-11
count named before area	16	-11	-9
count named before surface	24
count named before tool	20			-4
count named before word	19			-10
count named here area	-12	12	-13	4
count named here defect	6	-17	9	-9
count named here finish	-15	4		-22		22
count named here material	-63			37
count named here part	-87	18		21
count named here surface	56
count named here tool	-48	23	-33	19	7
count named here word	-23			7
count nameless	37			-17
count need modal behind	-21	27
count need owed before	7			-16
count need owed behind		14
count need past before	-21		8
count need past behind	20	-5
count need present behind	-10	16		-24
count not ahead		21	-24	-23
count null copula before		15	-11
count null modal behind		9	-21
count null none no	-12
count null owed behind	7
count other copula before	-5
count other imperative behind	-17	61
count other modal before	16		-15	-15
count other modal behind		10		-6
count other owed behind	-19		26	-27
count other past before						13
count other past behind	-5	-12				16
count other present before	23		-4	-7
count other present behind	-9	16	-15			7
count pointing	-21			29
count right (	-19		4	-19	19
count right +				12
count right @	-24	20	-22	5
count right Q		9
count right T	-8
count right a		11			-20
count right above	21			-5
count right after	31			-18
count right all	-35		22	5
count right already	16	-18	10	-29
count right and				8
count right are	-13		7	12
count right be	22	-22
count right bend	27			-15
count right break	6			-6
count right by		15		-30
count right can	-44	16	25	-13
count right come		-31		-52		26
count right crack	15	-12	-21			9
count right down		-11	-14	11
count right each	-16	-14	-6	26
count right for	-33	38
count right from	-7	-12		6
count right go		-12	-6	4
count right has	44			-22
count right i	-16	-30			19
count right in		-41	16	9
count right is	21	-29
count right it	-25	-10	22	7
count right leave	-27		51
count right miss	17		-26	-41
count right more		10		-5
count right need	4	4		-17
count right no	-38	45	-22
count right now		-23	-20	21
count right of	-40	43
count right off	22	-8
count right on		-13		13
count right out	-25	-26	-29	43
count right over		-22	15	-32		13
count right pull	19	-7	-21
count right run		15		-35
count right short		18	-28	-19
count right still	5		12	-25
count right strip	10
count right the	-18	24
count right then	14
count right through		-9		13
count right to	-6	5				18
count right up	-21		-18	38
count right use	-12			20
count right were			-12	-11		30
count right when	5	-16	12
count right which	37			-9
count right with	33			-9
count say imperative behind	-15		5	9
count say modal behind	23	-18
count say past behind		7		-12
count say present behind	-14	9	14
count says imperative behind		37
count says imperative behind not	-12	27		-12
count says modal before	-7		-23	8
count says modal before not	-9	12		-22
count says modal behind		26		-5
count says modal behind not	21		-20
count says none no	-10
count says none no not	-13	28	-8	-19
count says owed before	-29	28	-24	-35	21
count says owed behind		9
count says owed behind not	20			-11
count says past before		-5		8
count says past before not	-15	-10	5	16
count says past behind				12
count says past behind not	19	5	-42
count says present before		7
count says present behind	-12		8
count says present behind not	-10	15	-13
count sized	-62	36
count sold so false	15		-29
count sold so true	-8	7
count then buy b	-22	30	-11	-20
count then have b				-16		11
count then have pp		5	-9
count then measure b	-21	-19	-29	32
count then measure bp	24			-6
count then measure i	-22		6	11
count then measure p	-19	-39				35
count then move b	5	-16	5	-6
count then move p	-7	-26	-17	22
count then move pp	-23		52
count then move s	-4	-8		5		12
count then need b	17			-15
count then need pp	-35	21	21	-25
count then other b		9	-29	-26	5
count then other i	20	6	-20	-43
count then other p			-5			15
count then other pp		-30		-6		12
count then other s	14	-16		-7
count then undefined has	34			-21
count then undefined will	-10	21		-11
count then use pp	-18			27
count then work b		5
count then work bpp	6	-23	-9	8
count then work i			21	-27
count then work pp		-10
count then work s	-25	9	-31	30
count use past before	-18			27
count use past behind				23
count use present behind	-24	-13		30
count verb balance behind	-21		18
count verb break behind	-22	18
count verb bring behind	-20	17				7
count verb buy behind		20
count verb call behind	-7	7	-5
count verb change behind	-40	-21	-6	44
count verb come behind	-6	-13	-14	-15	27
count verb count behind	19	-36	9	-15
count verb cut behind		-13	17	-7
count verb drill behind	5
count verb drive behind	-11		-7	28
count verb find behind	-16	14		8
count verb finish behind	28	-21
count verb get before	-12	20	-31	4
count verb get behind	-4	15
count verb give behind	-18		-17	-26	19	19
count verb glue behind	-12	-14		24
count verb go behind			-9
count verb grab behind	11	-10			11
count verb hang behind	-34			42
count verb have before	22			-12
count verb have behind			18
count verb i'll behind		18		-27
count verb leave before	-23		47
count verb leave behind	-7	-6	27	-27
count verb make behind	-19		8	6
count verb measure behind	28			-11
count verb miss behind	-31	34
count verb move behind			10	-21
count verb must behind	11
count verb nail behind		-6	-6	5
count verb need before		10		-17
count verb need behind		36
count verb null before		15	-11
count verb null no	-12
count verb order behind					20
count verb patch behind		18		-14
count verb pick behind	-30	22		-15	21
count verb prime behind	39		-5	-26
count verb pull behind	44			-27
count verb put behind			-26	22
count verb rate behind	23			-5
count verb read behind	9
count verb replace behind	-9	-26	-9	24
count verb run behind	-22	6		20
count verb sand behind	4			-5
count verb see behind		10	-7	-6
count verb send behind	-15		-41	-27		38
count verb set behind	4
count verb should behind	-10	-13		20
count verb sister behind	8	7	-5	-15
count verb strap behind	-26		10	17
count verb strip before	16
count verb swap behind			-16
count verb take behind	-17	-26				28
count verb think behind	-7		17	-10
count verb throw behind	-29	18	-15	6
count verb tighten behind	8
count verb use before	-28			37
count verb use behind				16
count verb want before	-11	-16	12	7
count whole clause	-25			28
count work modal before	-29	24	4	-21
count work owed behind	16			-29
count work past before		-13		25
count work past behind				40
count work present before	-38	7	4	24
count work present behind	-15	-15	14	18
counter appliances	6
counter landscape	9
cue bought	-13				57
cue came			9
cue need		27
first N	-19	33
first air	9
first almond	17
first an	-29	36
first anchor	11	5	-9
first another		10		-15
first any	35
first anything	-5			18
first apt	19
first backsplash	6
first bath	19
first bedroom	12
first birch	-12		18
first black	36
first block	36
first bolt	-7	7
first bone	8
first both				11
first bottom	22
first bowl	15
first bracket	-8	18
first brass	40	-10		-9
first brown	31	-16
first bye	22
first cab	13
first cap	27
first catch	17
first caulk	39	-9
first ceiling	7
first circuit	15
first clear	28
first clearance	10
first clip	18			-8
first coat	24
first code	18
first coffee	26	-5
first corner	26
first counter	31
first crown	16
first cust	31	-20
first daylight	10
first drain	17
first draw	14
first drill	23
first drop	19
first drywall	38
first due	18
first edge	16
first eggshell	-34		9			24
first electrical	-5				18
first enough	31		-18
first epoxy		-18		20
first fall	9
first fence	14
first final	11
first first	18
first first coat	4
first flash	-12		21	-11
first flat	8
first floor	13
first foam	11
first frame	-15	12
first front	28
first gap	8
first gas	19
first glue	50
first gray	-23	16		11
first green	20
first grout	33
first happy	13
first hearth	33
first heat	14
first hello	20
first her	33
first hinge	18			-10
first his	32
first hiya	4
first hook	5
first hot	20
first house	18
first hvac	8
first island	15
first joint	15
first lag				13
first latch	25
first left hand	22
first legs	16
first lift	22
first line	15
first list	15
first lock	16
first lol	18
first long	13
first luis	27			-6
first main	12
first maple	28
first morning	12
first mortar	30			-5
first mud		11		-12
first my	38
first nah	17
first new	-40			45
first niche	16
first nickel	10
first no	20
first oak				13
first old	38
first ones		-5
first open	14
first orange	23
first our	-13		21
first pack					10
first paint	42
first permit	17
first pete	10
first pipe	-8	16
first plaster	27
first plate	-24	17		12
first plenty			9
first plug	4
first pump	27
first putty				13
first quiet	33			-10
first rear	26
first red	24
first replacement		14
first rh	20	-6
first rick	7
first rigid	-15			25
first ring	27
first rise	12
first ro	18
first rod	26	-16		-11
first rudy	7
first sand	29
first saw	14
first screed	13
first screen	-6	17
first seam	16
first seat	-25			30
first second	29
first second coat	10
first shim	-8	21
first shingle	16
first silicone				16
first silver	19
first sir	15
first skirt	28
first slab	10
first slope	11
first soft close	19
first some		8
first sorry	14
first splice	16
first stair	10
first stairs	18
first staple		-5	8
first static	14
first step	12
first strap	-5			16
first strike	28
first suite	18
first svc	6
first tank	15
first tap	4
first temp	19
first the	11
first their	31
first third	14
first those	22
first tile	20
first trim	25
first truck	10
first upper	20
first vent	-6	19
first wall	24
first walls	18
first walnut	19
first water	7
first waterproof	23
first wax	-31		21
first white	57	-28
first whoever	28	-9
first wire	31	-6
first zone	28
gap  have	20	-18		-14
gap  have copula	23	-11	-7	-11
gap  have past	47		-37
gap  need	39	-8
gap  need imperative	48	-44
gap  need modal				-9
gap  need none		9	-11	-7
gap  need owed	5
gap  need present	30	-14
gap  none imperative	-16			14
gap  none none	-22	16	13	-11
gap  none owed	-10	17
gap  none past	15	5		-18
gap  none present	16
gap  used	22			-9
gap  used none	26	-5		-30
gap  used past	20		22	-45
gap & need	-17	22		-6
gap ( need	31	-27
gap + need	-30	48
gap + need imperative	-7	18		-8
gap + need owed		31
gap + none	26			-7
gap + used	-24	-24	-16	41
gap + used none	-37	-20	-21	42
gap , and need	-17	32	-15	-25
gap , and need none	-17	32	-15	-25
gap , bought	-18	-35		-40	43
gap , bought none	-20	-36		-42	43
gap , have		-32	40	-52
gap , have none		-31	42	-54	-8
gap , need		37		-10
gap , need have	-9	14
gap , need have owed	-9	14
gap , need none		34		-6
gap , none copula				9
gap , none none	6
gap , none past				9
gap , used	-17	-37		38
gap , used none	-14	-44		45
gap , used past			8	-20	9
gap . have		7
gap . have copula	27			-6
gap . need copula	34
gap . need none			12
gap . need past	-10	-14	15
gap . need present	11
gap . need used	-5	13
gap . need used owed	-5	13
gap . none		-5
gap . none copula	-6
gap . none none		-34
gap . none past	25
gap . none present	17
gap . used copula	-18	15
gap . used none	5	-11	-6			12
gap . used past	31			-22
gap . used present	27	-7
gap : none		-20	-18	-19	23
gap ; have	33
gap ; have none	33
gap ; need	-10	23	-11	-22
gap about none	31	-12	-7	-6
gap above none	8
gap and bought	-43	-34	-16	-27	50
gap and have	-39	-45	65	-27
gap and have copula	-20	-31	37	-19
gap and have none	-34	-17	40	-19
gap and have past		-5
gap and have present	-20	-13	30	-6
gap and need	-24	89
gap and need copula		19	-5	-11
gap and need imperative	-6	33
gap and need modal	-24	51		-9
gap and need none	-42	61		-21
gap and need owed		16
gap and need past	-5	21		-24
gap and need present	-16	39
gap and none	10
gap and none copula	52
gap and none imperative	14
gap and none modal	-11	18		-6
gap and none none	-13	18	-8
gap and none owed	-28	23
gap and none past	45			-28
gap and none present	7			-10
gap and there's none	-16	10			17
gap and there's none copula	-16	10			17
gap and there's used			15	-6
gap and there's used copula			15	-6
gap and used	-25	-22		75
gap and used copula	-17	-8		40
gap and used none	-27	-29	-24	42
gap and used past	-15			44
gap and used present	13	-22	-15
gap at need	27	-15
gap but none	16
gap by need	31	-14
gap by need owed	25	-17
gap by none copula	13
gap far bought copula	19
gap far bought imperative		19
gap far bought modal	13
gap far bought none	-5	-21	20	-24	9
gap far bought present	14
gap far have imperative		20
gap far have modal	-7	25
gap far have none		14
gap far have owed		21
gap far have past	-9		11			5
gap far have present		-16	12
gap far need modal	6
gap far need none	5
gap far need owed		14
gap far none imperative		10
gap far none modal		13
gap far returned	-16				14
gap far returned copula	12
gap far returned modal		10
gap far returned none		9		-10
gap far returned owed	-8	22
gap far returned past	-37	-24	6	-19	39
gap far returned present			6
gap far used copula	16
gap far used owed		14
gap fitted, used	-22		-13	21
gap for have	5
gap for need	43	-17
gap for need none	14
gap for none	20
gap from none copula	10
gap from used	28	-7	-18	-18
gap has none	17
gap has none present	13
gap have none present	-5		10
gap hung, used				5
gap i got none	-18	14	13	-24
gap i got none past	-18	14	13	-24
gap i put none				10
gap i put none past				10
gap in have	37
gap in have copula	19
gap in have none	18
gap in have past	13
gap in have present	24		-19
gap in none	22
gap in none none	29			-15
gap in used	17
gap in, used	11			-25
gap is none	16
gap it's none	-9	18		-6
gap it's none copula	-9	18		-6
gap left have	24		-13
gap left in have	22
gap left on have	15
gap left, have	37	-24	-15	-18
gap left. have	17	-13	-12	12
gap left. have none		-20	-18	21
gap line need	-11	14	13	-30
gap line need none	-8	21		-35
gap line need past	-12		19
gap line none	40	-8		-22
gap line none none	27	-17		-8
gap line none past	25			-9
gap line used		15
gap line used none		13
gap near bought		-20
gap near bought copula	11
gap near bought none	20
gap near bought past				17	-8
gap near have		24
gap near have copula		20
gap near have imperative	-18	28
gap near have modal		12		-4
gap near have none	-12	7	4
gap near have past	7		-7	-11
gap near need copula	5
gap near need modal	13
gap near need none	-11	42	-9	-25
gap near need owed	13
gap near need past			9	-16
gap near none imperative	12
gap near none modal		9
gap near none past				7
gap near returned	31
gap near returned past	24
gap near used imperative		20
gap near used modal	-18	27		-8
gap near used none		-5	-10	20
gap near used owed				-9
gap near used past	-5			12
gap near. bought						16
gap near. bought none	27
gap near. have				-11
gap near. have imperative	24
gap near. have none			26	-42
gap near. have owed	21	-11
gap near. have past		9		-7
gap near. have present	8
gap near. need copula	10
gap near. need imperative	-5
gap near. need modal	23
gap near. need none	5
gap near. need past	-6					12
gap near. need present	-14		10			11
gap near. none imperative	10
gap near. none none				-4
gap near. none owed		20
gap near. none past				9
gap near. returned	-24		24
gap near. returned none	-25	11	22
gap near. used copula	24
gap near. used imperative	9
gap near. used none			9
gap near. used owed		11
gap of need	44	-37
gap of need owed	32	-26
gap of none			9
gap of none copula	9
gap of those and need		18	-7
gap of used	29			-23
gap off used	17			-12
gap on have	15
gap on have none	14
gap on need	27	-6
gap on need imperative	19	-7
gap on none none	18			-9
gap on used				5
gap on used copula	-20			28
gap on used past	26			-9
gap on. used none		10		-14
gap or none	-15	25	-6	-22
gap over none	8
gap plus need	-34	43	-16	-29
gap so none copula				10
gap so none none		5	-22
gap so none owed	18
gap so none present	18
gap so used	18		-20	-18
gap still on have	17
gap the need	35
gap then none	7
gap there's used		-8	15	-10
gap there's used copula		-8	15	-10
gap through none	31			-23
gap through none past	12
gap to none	21
gap to none copula	16
gap to none none	16
gap to none past	4
gap under none	17
gap up, used				5
gap up, used none		-6		8
gap used, used	-27		36	-17
gap used, used past	-12		23	-4
gap used. used	24
gap used. used none	12
gap w/ none	5		-17
gap with none				14
gap with none copula	35			-21
gap with none past	-30			36
gap with used	-10			9
goods false false	10
goods false true	10
group eachOf	8	-25	-17	6
group range	41	-16		-13
head 1	-25	10	16
head 2	7
head 2 x	9
head 2x4	-12	-13	13	8
head 3	24
head 5	20
head 7	-15	18
head abt	24
head ac	12
head access	10			-20
head acrylic	-24	17	-7	8
head adhesive	-20	-5	11	4
head aerator				8
head aff	29
head air	29
head air gap	-11		20	-7
head almond		19	-13	-19
head alone	4
head already	16	-17	5	-18
head amps	36	-4	-15	-6
head anchor	-32	-8		40
head anchors		7	11	-23
head anti tip bracket		5		-7
head anyhow	19	-12
head anything	21
head apart	11	-29	-22	10
head architraves	28
head arm	8			-15
head away	23
head b	18
head back	-22	-16		-14		54
head back door	19
head back wall	6
head baffles	29
head bags	-22	17	20	-27
head ball	12
head ball catches	-16	12	13	-28
head ball valve	-16	23
head ballast	6
head baluster	6			-19
head balusters		-32		13
head band	21	-20
head bar		14	-7
head base	6
head baseboard	24	-5		-11
head basket	-26	18	13
head bath				6
head bath fan	21
head bathroom	-9	-12		17
head batt	24	-33		6
head battery	-7	22
head batts	-12	14		-16
head bead	11	-20	11	-18
head beadboard	11			-10
head beam				13
head beam's				12
head bearing	9
head belt	-33	20		20
head belt's		8	-13	-11
head belts	29			-15
head bench	24
head better	10
head bit	57			-19
head bits	19
head blade				-17
head bled	9
head blinds			-13	8
head blocking	32
head blocks	-16
head blue tape		21		-24
head board	-16			18
head boards	-20			27
head bolt	-6	-17		28
head bolts		14
head bond	-6	14
head bonding primer	-15	24	-8
head bone	12
head book	4
head boot	22
head boots	29		-26	-29
head boss	30
head bottom	14
head bowl	18
head bowls	-7	-10		14
head box	-12	5		9
head boxes	6	-20		-32		16
head boy	21
head bracket's	4	-19	11	-12
head brackets	-11			6
head brads	-24	14	-22		12
head braided lines	-14		17
head brass		13		-12
head breaker				5
head breakers	-28		-18		15	20
head brick	-29		14	15
head bricks				5
head brother	17
head brown	33	-10
head brushes	-35	16	23	-24
head bucket	-16	-15	15
head buffet	-6	14
head bulbs	-39	-12		-4	24
head bullnose	-15	14	8	-21
head bushing	-7	21		-6
head butt joint	22
head butt joints	8
head button	11
head bye	21
head cab		-10	7
head cabinet	17
head cabinet doors		-16		14
head cabinet screws	-8		5
head cabinets		-30	22
head cable				9
head cables	8	-28	-19	20
head camera	26
head can lights		-10		9
head cap	-8	13
head capacitor's	9	-14
head car charger's			-5	15
head carcasses	17	-25	-15
head carpet	51			-18
head cartridge			13	-13	-17
head casing	10	-14		-20
head cat6	-11			22
head catch	17
head caulk			11
head ceiling	28
head ceiling fan	-6	-22	-7	-20		25
head ceiling tile		-19	11	-24
head ceiling white	-18	26	-21
head ceiling's	8
head cellulose				6
head center	22
head centers	8	-17
head centre	6
head centres	24	-6		-20
head chair rail	26			-11
head chairs		18		-19
head channel	-6	16
head charge	18
head chase	14
head check valve	-9			18
head chime	10
head chimney		11
head chimney's	29	-5
head circuit	31
head cistern				10
head clamp	4	-7
head clamps	-18	26
head clear	8
head clearance	8
head cleat		12
head cleats			13	-29
head clip	-11	10
head clips	-45	21		13
head closer	-16	11
head closet	24
head closet bolts		14	-28
head closet rod	-7		17
head closet shelf	12
head coat	7	-13
head coat hooks		-16		15
head cock	17	-12
head code	25	-4
head coffee	-7	25	-19	-17
head coil	48			-31
head cold	28
head color			5
head come	30
head complaint	13
head compressor	18
head condenser				11
head conduit strap	22	-7		-5
head construction adhesive	-12				13
head contractor bags			8
head copper	5
head cord	-5			17
head corner bead	27
head corners	25	-25	7	-29
head cornice	5
head counter	7
head countertop	18
head couplings			-8	15
head course	22
head cover plate	-8	17		-8
head cricket	22	-8		-5
head crown	15
head crown's	27
head curb	13
head curb's	18
head cut	-5			15
head cut out	8
head damper's	35	-20		-20
head daylight	10
head dead	30
head dealer		11
head deck mud	7	-7	-26	12
head deck screws	-10			14
head deep	63			-11
head dehumidifier	23
head delivery				-6	10
head desk	7
head difference	14
head dime	24
head dimmer	-8	24
head dirt	26		-22
head discs	-45	14	8	13
head dishwasher	18
head dishwasher's	18
head disposal	18
head dog	24
head door casing	26			-9
head door closer	-14	19		-14
head door stops	-16			18
head doornail	10
head downspout				13
head draft	-21	-5		20
head drags	19
head drain	20			-8
head drain's	-12	17
head drains	15
head drawer	9
head drawer boxes	-19		14	-22		19
head drawer front	18		-4	-28
head drawer fronts	40	-11	-23	-20
head drawer slides			-8	-18		16
head drawers	26	-9
head drawing	14
head drill	22
head drip edge	24
head drop	48
head drop cloths	-19	-24	40
head drops	29
head dryer	4
head dryer vent	10
head drywall anchors	-13		17
head drywall's	-5
head duct	10
head duct tape		9		-9
head due	17
head dumpster	25			-7
head duplex	26
head earliest	16
head edge	12
head edges	25
head eggshell	-36	25		5
head either	14
head elastomeric	12			-15
head elbow	-27	41
head elbows	-30		6	20
head electrical	33	-20	-21	-20
head em	19
head enamel	-31	-17	35
head end	14
head end caps	-16		8
head end panel	24
head enough		-11	13
head epoxy	-25	-10		32
head everywhere	10
head except	36		-15
head expansion tank		12
head extender				7
head extenders	-38	48		-14
head face frames	29			-13
head factory	13
head falls	23
head fan	30			-6
head fascia	20			-16
head faucet	-12			5		15
head faucet's	-15			27
head fault	29	-20
head feed	8
head fell off	17
head fella	25
head fence	25
head field tile's	-7		-11	19
head filler	20	-16
head filler strip	-41	43
head filter	-19			7
head filters	-7			15
head fine	23
head finish	4
head finish nails		38	-33	-18
head fire caulk		28	-23	-29
head fireplace	5
head first		11		-10
head first coat	14
head flame sensor	30			-13
head flange	8
head flapper		-8	-8	26
head flashing	37
head flashing tape	-19	4	-13	12
head flat	5
head flex	-9	9
head flight	12
head float	9
head float switch	-7	7	6	-4
head floor	9
head floor drain	16
head floor tile		-42	31
head floor's	8
head flow	23
head flue	37			-14
head foam	-14			14
head foam rollers	-26	43	-17	-27
head folks	17
head footing	4
head footings	27			-15
head four by four	-9	19	-10	-19
head frames		-8	15
head fridge	23
head front	9
head front door	18
head front edge	7
head frost free	-16	9		8
head full	-25		14
head furnace			6
head gable	8
head gap	39
head gaps	26			-16
head gas	23
head gasket		8
head gate	33
head get	18
head gfci	9
head gfi	19	-4			-4
head glass	22	-7
head glass doors	-20	-15	9	16
head glides	17			-8
head glue's				-23
head go	16
head good	31			-10
head grade	6
head grain	19	-8
head gravel	19		-12
head gray	-11	-12		21
head grease				6
head green	20
head grid		-7		13
head grille	20
head grinder	14
head grout	11	-24	17
head grout's	-4		17	-26
head gutter	9	-29	-7	5
head gutters		-20		16
head guy	27
head guy's		11		-13
head ha	12
head hair	35	-8
head hall	-13	-28	-17	11		21
head hammer	25	-14
head handle	11
head handles		-13		-32
head handrail	36			-7
head handrail brackets	15			-16	7
head hang	17
head hanger		-22	-8	11
head hangers	13			-29
head hard	21			-13
head hardware	-8	-21	19	-6
head hardwood	-26	-28		28
head hatch	18
head head				8
head header	31
head headroom	5
head hearth			7
head heat mat	27
head heat mat's	25			-8
head heat pump	25
head heater	21
head height	26
head height's	5	11	-8	-13
head hello	10
head hidden clips					6
head high	49			-11
head higher	6
head hinge	13
head hinge screws		23	-33	-11
head hinges		-9			8
head hip	24	-12
head hiya	21
head hob	-9	12		-4
head holder	-27			32
head hole	48
head holes	35
head hood	27
head hook	19
head hooks	8	-33
head hose	11
head hose bib	16
head hot	6
head hot mud	29			-11
head hot side	12
head house	18
head humidity	18
head insp	25
head instead	8	-20			9
head insulation	14	-11			12
head itself	22
head jack	35	-9		-18
head jacket	12
head jamb	23
head jefe	16
head job	17
head joints	13
head joist	38		-21
head joist tape	-22			22
head joists		-14			12
head keeper	5			-4
head key	7
head keys	25	-11
head kick	-11			19
head kit	-41	41	11	-12
head kitchen				10
head kitchen island	5
head kits	-42	26	27	-10
head knife	28
head knob		11
head knobs	-22	-6	13	14
head lacquer			13
head lads	9
head lady	18
head lags	-18	6	-20	15
head laminate	24
head lamp	27
head landing	19
head latch	23
head laundry box	30
head lav	17
head lead	20
head leaves	19
head led	4			-7
head ledger	34
head left hand	-21	26
head leg		7		-7
head legs	-6			12
head lid	-10	17
head lift	25
head light	30
head light switch		-19	20	-19
head light's	12
head lights	45			-8
head line set	22
head lines	27			-5
head lineset		10		-11
head lint	24	-12		-9
head lip	15			-8
head list	23
head live	-9	-11		17
head lock		-13			13
head lockbox	34	-11		-8
head locks	11		8	-21
head lol	23
head long	27
head loop	18
head loose	34
head lord	22
head low	38
head lugs	20			-6
head luis	26			-8
head lvl		16	-6	-22
head machine	32	-16
head maglock	28			-14
head main	7
head man	21
head manifold	30	-20		-20
head mantel	16
head maple	26
head marble	36	-4		-17
head marco	18
head mastic	-12	6	-5	17
head max	12			-17
head maybe	-4	-13	31
head meantime	25
head medallion	7	11	-20
head membrane	5	-24		10
head mesh			-13
head meter	21
head microwave	19
head mind		-14	17	-5
head mini split	26
head mirror	17
head mirror's	17
head mix	-18	11
head mixer	-11	-15	20
head moisture	6
head morning	21
head mortar	-22	14		5
head mortar's	-14	-17	29	-17
head mosaic	28			-17
head mosaic's	-8	-10		16
head motor					15
head mud	-15	24
head mudroom bench	24
head multi-finish	-24	18	14	-13
head must	29
head nail	42			-15
head nail holes	10
head nail plates	-35	29		8
head neutral	30			-7
head niche	6
head nickel	10
head night	18
head nipple	-9	23		-26
head nos	-42	-7	7	36
head nosing		-7		-11		19
head numbers	-8	-13	21	-14
head nut	36
head oak	33
head ofc	7
head old	18
head one's	22
head only	29
head open	21
head opened up	29			-8
head opener's	21
head opening	24
head order	16
head outlet	47			-5
head outlet covers	-10	-37	-31	7		24
head outlets		-9	14	-18
head outside	-23	32		-5
head oven	17
head overhang	12
head own	27			-19
head packing	-12	-14		18	6
head pad	-8			18
head pads	-14	19
head paint's	30			-10
head pan		18
head pancake	22	-32	11
head panel's	23	-9
head panels				5
head paper	25	-6
head part	23			-5
head particle board	-16	-5	20
head paste	-8				15
head patch	30	-11
head patio door	-11			17
head pavers	13	-25	-20	6
head pendant	10	-13
head pete	10
head pex	-16	-15		25
head phone	11
head photos	30
head piano hinge	-18	10	-13	12
head pickets	-30		-12	9		22
head picture	22	-7
head piece	-25		15	10
head pins	-6	33	-20
head pipe's	32	-10		-16
head pipes	14		-20	5
head pitch	25			-7
head pivot	20
head plank	26	-5		-12
head planks	-28		29
head plaster	13	-16		8
head plasterboard		-17		-13	19
head plastic	23
head plate	-9			5
head plates	-42	13	5	8
head please	-36	53	-14	-37
head plenty	6	5	-19
head plinth	36	-9
head plinths	-16	-16		23
head plugs			-16
head ply		-5	7	-7
head plywood	7
head plywood's		9		-4
head pocket	10
head pocket door	22
head poly		6		6
head post	23
head posts	7	-29	-16	13
head precharge	23
head pressure	25			-14
head primer	-8		10
head print	23
head profile		9
head prv	-26	25			11
head pull	23
head pulls		-5				13
head punch	10
head purple board			-14
head put	25
head putty	-4			23
head pvc	-37	11	-9	33
head quiet		7		-13
head quikrete	16	-7	-5	-6
head rack	25
head radiator		-14		7
head rafter				13
head rails	-6			7
head rain	12
head range		16
head read	28
head rear	22
head receipt	24	-17
head receptacle	14
head receptacles		-9		7	11
head red	12
head reducer	-13	18
head register	9
head regulator		7
head remains			16	-18
head render	15	-12	13	-18
head rental	24
head replacement	9		-8	-17
head return	15
head reveal		10
head rh	20	-6
head rigid	-19			19
head rim	-22			30
head rim joist				5
head ring	-36	8		31
head rise	22
head riser	24
head riser's	22
head risers	52	-37	-7	-30
head rm	13
head rock	37
head rod	10	-23			11
head rods	-39	15	9
head roll		-13	16			-12
head roller	-11	30
head rollers	5
head roots	22
head rosette	6	6	-13
head rough		6	9		-9
head rough in	17
head round	50
head row	18
head rubber	-7	18		-15
head rudy	6
head run	54			-9
head runner	-16	21	-6
head salon	30			-9
head sample	27	-13
head sand	19
head sand paper		18		-16
head sandpaper	26		-15	-21
head sandwich	25
head sash	-5	17
head sash cord	-8	15
head satin		-29	33	-31
head saw	18
head screed	4
head screen	35
head screw		-9		20
head screwdriver	21
head screws				26
head scribe	13
head scribe molding		-19	22	-17
head seal	-8			13
head sealant	-42	34	4
head sealer				-6	5
head seam	9
head seam's	24
head seams	23
head seat washer	-25			20	18
head second coat	10
head self leveler	-19			29
head sensor	-17	12	11	-12
head set				13
head shd	12
head sheathing	11			-10
head sheet			5
head sheet rock			-17	-6	18
head shelf	12
head shelf pins	-4	-8	-10	26
head shellac				7
head shellac primer	-9	-18	23	-20
head shelves	5	-35	-19	21
head shims	-32			17
head shingles	21	-9	11	-27
head shld	15
head shoe		26		-19
head shoes	29
head shop	-12			17
head shot	13
head shower			7
head shower pan	23
head shower walls	26			-17
head shut off	27	-14	-4
head shutoff		6
head shutters	6	-11	-8
head side	21
head sides	47			-33
head siding	16	-33	6
head sign	32			-21
head sill	10
head sill's	14
head silver	19
head sink	37
head sir	12
head skim	23	-12
head skip	13
head skirting	-8		9
head skirting's	-10		-6	9
head slab				-6
head slabs	-20	-26	23	-18		17
head slate	11
head sleeve	26
head slider	18
head slider's	20			-5
head slides			-6
head slip		-13		16
head slope	8
head slow	33			-4
head smoke	9
head smoke alarm		6		-7
head socket				8
head sockets	-22	-35	10	22
head sod	-11			17
head soffit	38	-6
head soffit vents	40			-24
head soffit's	24
head somewhere	23
head son	12
head sorry	24
head spare	-33	-29	41	-24
head speakers	-29	-15	19
head spec	13
head spins	9
head splice	35
head split	15
head spots	27		-11	-29
head spout	14
head springs		-22	-12	18
head square	38	-9		-8
head stack	35	-17	-7
head stain	29	-31	5	-15
head stainless	28
head stair	10
head standpipe	14
head staple	16	5		-28
head staples	5	-13
head stat	15
head static	30
head stem	30			-10
head step	26
head stile	18
head still	43		-31
head stock	-6	-12	18	-10
head stone	-10			14
head stone's		10
head stones		21	-21
head stools	20
head stop	32	-15
head stops	-10			13
head store	21
head storm door	-32	-6	22	-22		25
head story	13
head stove	8
head straight	25
head strainers	-33		9	27
head strap	-8			22
head street					12
head string	32	-11
head stringers	-9		18
head strings	36	-18		-32	9
head strong	15
head structural screws	-46	38		9
head stub	12
head stub's	19
head stucco	10
head stud	13
head studs	7			-15		4
head subfloor	21	-16		-17
head subfloor's		-19	13	-14
head supplies	11
head supply line	-20		-9	-23	23
head supply lines				8
head supply plenum's		14
head supposed	32
head svc	6
head switch	45	-10		-7
head switches		-16		9
head tack strip	27
head tag	39			-24
head tailpiece	-34	20	21	-18
head tank	-9	14
head tap	31		-17
head tapcons	-40	32	-12	12
head tarp	-8	6		7
head tee	-13			18
head temp	23
head template	23
head the lady	-23	30	-10	-15
head thermostat	23
head thick	13	-14
head thin set			10
head thing	9
head thinset	-7
head third		5
head though			12
head tile's	14
head tiles				-4
head time	8
head tip's	-6	10
head toe kick	14
head toggle bolts	-7		-10	-8	20
head toggles	-40	32		12
head toilet	4
head toilet flange	17
head toilet's	19
head tony	24
head too short	21
head top	8
head top edge	7
head towel	19			-20
head towel bar	-36	-40	-26	-32	29	22
head track	46
head traffic	18	-4
head trailer	14
head transformer's	-5	7
head transition	25
head trap	7
head trap arm	23
head trash pullout	26	-8
head travelers	14
head tray	12			-17
head tread	5	9	-13
head treads		-9
head trench	9
head trim	16
head trim screws	-24	-21	20
head trim's	23			-10
head truck	32
head trunk	33		-19	-14
head tub	-10	15
head tub spout	-5		7
head tub's	37	-8		-22
head twice	19
head two	22
head two by eight	5
head two by six	10			-18
head two by ten	21		-6	-17
head type s		-21	11
head underlayment	5	-32	12
head union	-14	28		-16
head upper			-12	10
head uppers		-26		5
head upstairs	-19		-13	35
head ute	24
head vac	-10	-21	20
head vacuum	6
head valves		14	-7	-16
head van	21
head vanity	19
head vanity light		-10	-8	10
head vanity top	16
head vapor barrier		10		-11
head varnish			-10	22
head veneer	18		-11	-29
head vent	29
head vent stack	31	-8		-10
head vinegar	13
head vinyl					9
head wainscot	18
head wait	31	-5
head walk	5
head wall	15
head wall bend	30
head wall paper	14	-17	-17	9
head wall tile	20	-34	18	-7
head wall's	24
head wallpaper		-22	24	-22
head walls	29
head walnut	-7	19		-10
head washer	-30	9		22
head washer box	17
head washers	-47	55
head water	16
head water heater	15
head water heater's	31	-14		-6
head water's		13
head wax	-30		18	13
head wax ring	-41		18	31
head wax rings	-9	-5	15	-8
head wc	32
head weatherstrip		17
head weight	-19	-23	5	18
head well	-6	14
head when	17			-8
head whenever		12
head whip				15
head white	23
head whoever	27
head wide	32	-10
head wife	6
head wind	7
head window stool	13
head window's	11
head windows		-26		7
head winter	15
head wire	20
head wire nuts	-4	-16		20
head wire's	-6	7	7	-10
head wires	44	-7		-34
head won't latch	4
head wood filler	-34	25	-20	13
head work				8
head worktop		-14
head wrap	13
head wrong	-7	20	-4	-8
head x	-16				5
head yellow	9
head yet	7
joined and none				14
joined and owed	22
joined comma modal	10
joined run-on none	49
joined start imperative				4
joined start none	37
joined start owed		11
joined start present	31
joined stop imperative		4
joined word imperative		5
joined word none		24		-5
kept			31
last cue ate other	-10	8
last cue bought other	-14	26		-7
last cue bought same	-24	16		-34	34
last cue lacks same		8
last cue need same		37
last use buy imperative same		19	-14	-31
last use buy modal same	-4	13
last use buy owed same	19
last use buy past other	10
last use buy past same					17
last use buy present other		20	-15	-15
last use buy present same	9	-34	-22	-28	19
last use have imperative same	-8	21
last use have past same	9			-14
last use measure imperative other	-8	16
last use measure imperative same	-5		8
last use measure modal other	-19		23
last use measure owed same	15
last use measure past other	-29			36
last use measure past same	21
last use measure present other		-7	17
last use measure present same	15
last use move imperative other				-6
last use move imperative same	13
last use move modal other					7
last use move modal same	29			-8
last use move owed same		9
last use move past other	12
last use move past same			7
last use move present other			8
last use move present same		4
last use need modal other	19
last use need modal same	-20	21	12
last use need owed other	13
last use need owed same		18
last use need past other	17
last use need past same	-7	13
last use null copula other	4
last use null imperative other	21
last use null imperative same	31			-10
last use null modal other		5
last use null owed other	18
last use null present same	-8	19	-29
last use other imperative same		5
last use other modal other	5
last use other modal same	5
last use other owed same	-5	31
last use other present other	7
last use return past other	18
last use say modal same				6
last use say owed same	26
last use say past other			7
last use say present other			8
last use see imperative other	-11	-30	15	-18	20
last use see modal same	16
last use see owed same	24	-8		-5
last use see past same	12
last use use imperative other	-25					26
last use use past other	15
last use use past same	-21	-9		28
last use use present other	19
last use use present same			17	-15
last use work owed other		14
last verb add other	6
last verb add same	-13	-14	7	13
last verb adjust other	24
last verb adjust same	18
last verb arrive same	-10	-27	39	-36
last verb ask same	41
last verb balance same		10
last verb blow same		5	-9	5
last verb bolt same	-10	-33	-15	10	20
last verb borrow same	-14	23		-21
last verb box same	-12			19
last verb break same	-15		16
last verb bring same		29	-7	-17
last verb build other	20
last verb buy other	13
last verb buy same			-14	-5	12
last verb buzz same	-7			13
last verb call other				9
last verb call same	-25	11	12
last verb can same		8
last verb can't same	29	-12
last verb cap other			8
last verb catch same	23
last verb caulk other	21			-5
last verb caulk same	17
last verb change other		25		-18
last verb change same		-13		15
last verb check other			10
last verb check same	6
last verb chuck same	-11		18
last verb clamp same			7
last verb clean other	33
last verb clean same		-13				15
last verb clear same	50	-11		-23
last verb close same	-10	8	15	-35
last verb come other	10
last verb come same	18
last verb consum same	-19	-29	-10	33
last verb core same	-27			33
last verb could same	18
last verb count same	-15	17
last verb cover same	-22	28
last verb crack same	-21	18
last verb crush same	5
last verb cut other	5	-8
last verb dial same	23
last verb die same	21	-9		-11
last verb dig same				13
last verb do other		-11	7
last verb doesn't same	16			-25
last verb drain same		-9		11
last verb drill other		9
last verb drill same	18	-23
last verb drip same	5				-7
last verb drive same		-6		12
last verb drop other		10
last verb drop same	30
last verb dry same			5
last verb dump same		12
last verb eat same	14
last verb end same	18
last verb exchange other	17
last verb feather same		16		-10
last verb feed same	-4	-8		18
last verb feel same	5
last verb figure same			18
last verb file same	-26			22
last verb fill other	-15		21
last verb find other	-36	-6	14		22
last verb find same	14
last verb finish other				11
last verb fire same	-15	20
last verb fit same				7
last verb fix other		4
last verb fix same	-21		-4	26
last verb flash other	13
last verb flip other	-18	23
last verb float same	-13	20		-9
last verb flush same	27			-8
last verb foam other	-20	20
last verb foam same	17
last verb forget same	35	-19
last verb frame same	-18	12		7
last verb fre same	26	-5
last verb give other	-14	-12		14
last verb glue other	8	-21		4
last verb grab other	11
last verb grab same					11
last verb grout same	-17			22
last verb guess same		9		-11
last verb hand same	-19		-11	13		20
last verb hang same	-5	-8		37
last verb haze same	7
last verb he'll same	22
last verb hear same	-9	16
last verb hit other		5
last verb hit same	8	-25	7
last verb hold other	-4	-16		13
last verb hose same	23			-6
last verb hum same						18
last verb install other		11	-9
last verb keep other	12	-7
last verb kick same	29
last verb knock same				12
last verb know same	-4	-7	12
last verb land other	11			-10
last verb land same	-20		19
last verb latch same	5
last verb lay same		6
last verb leak same	36	-5
last verb let same			11
last verb level other	5
last verb level same				8
last verb lift same	7
last verb like other	6
last verb like same	-7	7
last verb listen same	7
last verb look other	-12	-5			20
last verb look same	31
last verb lose same		6
last verb make other			14
last verb mark same		8		-7
last verb measure other	-28		-7	20	5
last verb measure same	45			-15
last verb meet same	19
last verb meter same	30
last verb mitre same	30	-19
last verb mount other	33	-9	-9	-13
last verb move other	-18	15
last verb move same	34
last verb must same	22
last verb nail same		13
last verb need other	30
last verb need same		30
last verb notch same	24
last verb notice same	15
last verb open same	6	-17	11
last verb order same				-18
last verb own same	22
last verb pack other	5
last verb pack same		-33		28
last verb paint same	24	-25		-7
last verb pass other	14
last verb pass same			-16	-13	26
last verb patch other	-9		15	-19
last verb patch same	-10			13
last verb peel same		-16	15	-11
last verb pick same		9		-18	5
last verb pin other	16
last verb pitch same		8
last verb place same	-8			14
last verb plane other		-16	8	-16
last verb plane same	26
last verb point same	-15			18
last verb pop same	13		9	-34
last verb pour same	-19	27
last verb prime same			13	-19
last verb promise other	-8	-12	24	-12
last verb pull other	-16			21
last verb pull same				8
last verb pump same	8
last verb push same	14		-27
last verb put other		-12		10
last verb put same			9
last verb rack other	33	-13	-9	-10
last verb rake same	-12	6		9
last verb rate other	10	-17	-14
last verb rather same	6
last verb reach same	-7	16
last verb read other	-30		32	-25
last verb read same	6	-8
last verb redo other	17	-5
last verb redo same	-10	14	12	-27
last verb refasten other	19
last verb rehang other	26	-5
last verb rehang same	15	-6		-7
last verb reorder other	5
last verb replace other		23
last verb replace same	-16			14
last verb require same		34	-41	-44	-9	-6
last verb return same	26	-13
last verb rip other		10
last verb rip same	41			-15
last verb rock same	18
last verb roll other	11
last verb roll same			-4	15
last verb rough same	8
last verb run other		-4	-5	7
last verb run same	6
last verb sag same		5		-7
last verb sand other	15	-20
last verb sand same	-13
last verb say other	12
last verb say same	36
last verb scrape other		14		-7
last verb screw other	27
last verb scribe other	16	-6
last verb scribe same		6
last verb seal other	14				5
last verb seal same	16
last verb send other			14
last verb send same	4
last verb set other		-6		8
last verb shim same	-5			18
last verb short same	31	-19		-8
last verb show same		19
last verb shut same	22			-14
last verb silicone same			-28	19
last verb sister other	24
last verb sister same	19	-32
last verb sit other	-23	-18	19	16
last verb size same	11
last verb skim same	10
last verb skin same	6
last verb slide same	19	-14
last verb slit same			17	-24
last verb smell same	26	-5
last verb snake same	30
last verb snap same	7
last verb snug same	-9	18		-6
last verb soap same	9
last verb sort other	9
last verb spend same	-6			13
last verb spin same		9
last verb splice other	14	-16	12	-23
last verb spray same	29	-6
last verb square same	11
last verb squeak same		7
last verb stand same	8
last verb start other	39	-13		-5
last verb start same		-17		10
last verb stay same			13
last verb stick other		11
last verb stop other		9
last verb stop same	-15				18
last verb straighten same	-10		-22	-32	24
last verb stretch same	4	-18	-13	6
last verb strip other	-21			22
last verb strip same	7			-14
last verb stuff same		-13	-14	19
last verb swear same	19
last verb sweat same	18			-17
last verb take other		11		-4
last verb tap same	21	-10
last verb tape other					9
last verb tape same	37			-15
last verb tear same	35			-17
last verb tell other	-11		17
last verb tell same	5
last verb text same		-5		15
last verb they'll same				6
last verb think other				12
last verb throw other	9			-5
last verb throw same	-5	9
last verb tie same	35	-10		-24
last verb tile same	-6	16
last verb top same	26	-13		-12
last verb touch other	-16	20
last verb touch same	10
last verb trace same		-16		11
last verb trim other	-5	18
last verb trim same			-4	6
last verb trip other			-6
last verb trip same		8
last verb try same	12		-18
last verb turn other	12	-14	5	-19
last verb turn same		-11	15	-16
last verb use same	-16			17
last verb vacuum same	36			-24
last verb wait other	23
last verb wait same	-6	18
last verb walk same	21			-9
last verb wanna same	-19	-10	-5	-11	22
last verb want other	-7		7	-16
last verb want same			6
last verb wash same	27
last verb weep same	13		-14	-7
last verb wipe same	21
last verb wire same		13
last verb work same	25			-15
last verb would same	14
last verb wouldn't same				12
last verb wrote same	5	-8
left # G	11
left # N		5
left # Q			14	-23
left # T	23
left # about	-7	6	-11	11
left # add			-6	19
left # all	-27	-29		40
left # attic	12
left # back	22
left # bath	5
left # bathroom	6
left # bedroom	12
left # box	20
left # bring	-8	23
left # buy	-15	16			14
left # caulk	13
left # change	-13			15
left # closet	10
left # cut		10
left # dining room	17
left # do		-8		12
left # every	34			-14
left # figure	-37	44		-5
left # finish	-9	-10	-19	21
left # for	25
left # from	-6	-8	24	-21
left # garage				8
left # get	-29	44		-6
left # hall	7
left # hang	-16		16
left # have		-7	36
left # hit	8
left # i	11
left # i'll	8
left # i'm	12			-9
left # i've	23	-11	-10	-7
left # in	28
left # it	16
left # it's		6
left # just	26
left # keep			14
left # laundry	12
left # leave			7
left # let	6
left # living room	16	-5
left # move	6
left # need		29
left # nobody	9
left # of	24
left # on	11
left # only	-9	-18	18	-12
left # order		17
left # other		-19	11
left # pantry	20
left # porch	11
left # prime	-15			18
left # pull	13
left # return		-19	-25	-18		28
left # screw	-11			15
left # short	-36	51	-7	-17
left # sister	5
left # swap		-6		8
left # take			-5	-20		23
left # test	5
left # that's	-15	9		9
left # the	-10	-8	31	-14
left # there's			19
left # throw	-21	35	-8	-14
left # use				44
left # want	5			-11
left # we	10
left # we're	8	5	-16	-14
left # with	39	-8		-14
left &	-20	10		14
left '	9
left (	-7	7	-9
left +	-13
left -	9
left /	28
left 1 /	19
left @	28
left G &	-26	17	-7	10
left G (	28	-13	-11	-4
left G +		23
left G G					9
left G Q	-11	38	-23	-19
left G T	7			5	-6
left G about	28
left G and		17
left G are	24			-10
left G be	19
left G before	8
left G by	5
left G for	37
left G from	8
left G get		-8		15
left G has	15
left G have	36		-15
left G in		5
left G is	43
left G leave	34	-4	-27
left G miss	11			-16
left G need	-8	26
left G not	10
left G of		-11	5
left G off	13
left G or	38	-20
left G the	38	-5		-14
left G to	19
left G under	12
left G want		11
left G where	13
left G with	21
left G wouldn't	6
left N and	-11	27	-9	-6
left N by	9
left N for		5		-10
left N in	34			-15
left N of	-16	9
left N with	-4			14
left Q +		9		-6
left Q @	6
left Q G	-25	21		10	-6
left Q Q	26	-12
left Q above	13
left Q and		22
left Q at	6
left Q before	8
left Q by	33
left Q for	18
left Q from	17
left Q in	40
left Q need	-15	24
left Q of	33
left Q off	28
left Q on	30
left Q over	36
left Q short	39	-30		-7
left Q to	33
left Q toward	9
left Q under	14
left Q where	13
left Q with		-14		17
left T after	9
left T and	9
left T between	15	-11
left T for		9		-5
left T if	8
left T in	21
left T to	21
left T with		31	-6	-25
left a		-17			15
left a G	38	-29
left above	14
left across	13
left add				9
left again	7
left against	21
left all				25
left along	19
left already	12	-8	4	-5
left and after	7
left and half	-20		16	-16
left and it	16
left and then	22			-11
left are	34
left are in		-16		17
left around	24
left as	29
left ask	18	-5		-7
left at	24
left attic	12
left b	18	-4
left back						21
left back in			14	-16
left back of	10
left back to	25
left back with		7		-4
left bar	10
left basement	13
left bath	11
left bathroom	9
left bedroom	11
left before	21
left before i	8
left behind	17
left below	13
left bend	17
left between	26
left blow		-5		6
left book say	20
left bottom of	22
left box	22
left break	-13	14
left bring		15
left bring back	-17		4	-8		15
left bring me	-15	19
left burn	-7	-6		21
left burn through	-15			29
left buy	-14	9		-6
left by	17
left by Q	22	-7
left by T	-8	-5	22	-19
left call	7
left call for	28
left call it		13		-18
left can't	6
left can't get	16
left caulk	13
left change		7
left check	12
left chip on	6
left choose	9
left clean	14
left clear	15
left clip	-28		9	10
left closet	8
left come		-7	6
left come in		-7	17	-18
left come out	26
left come up	31	-11		-6
left come with	16
left count	-23	12	24	-23
left crack	8
left cut out	14
left dead	15
left dig	15
left dining room	10
left do	4
left don't	7
left down				16
left down from	29
left down to	-12	-28	43	-34
left down with	39			-18
left drill	21
left drip	16
left drip on	19			-5
left drive	-9	-9		26
left drop	6		4	-4
left eat	-8	-15		29
left em	-15	25		-4
left every	12
left except	8
left fifth	16			-7
left figure		17	-16	-21
left fill	23			-8
left fill with	-17	-16	-7	30
left find	7
left first	-6	20	-13	-18
left fit		-8		12
left flush	16
left foam	-9	-17	-7	29
left forget	-8	15
left from	5
left full of	12
left get			18
left get me	-4	27
left get to	13
left give	21
left give me	-6		-8	-15	18
left glue	41			-12
left go				9
left go and	-8		20
left go back			17	-6
left go in	15
left go on	21
left go through	-40			58
left gonna need	18	-12
left gonna want	-5	19
left good		-14	17	-7
left gotta	4
left gotta be	11
left grab					16
left grab me	15	-4
left grind	-7			14
left half	-22		27	-13
left hall	8
left hang				8
left hang by	28
left hang on	-13	13
left have			6
left have only		-8	7	-7
left have to	15
left he	5
left he need	-21	26
left he want	23	-20
left he's get			6
left here	-29	-18	34	-17
left him				-8
left hit	21
left hold	21
left hole in	11
left how	12
left i	10
left i bring	14		-5	-10
left i buy	-5	-18	-16		26
left i change	-7			19
left i clean	6
left i count	-12	14	10	-20
left i cut				5
left i drill	4
left i drive	-26	-4		33
left i figure	30	-20	-20	-12
left i finish	20
left i forget	-15	20
left i get	-18		35
left i hang	-10			24
left i have	-20		41
left i lay	-9			18
left i leave	-17		16
left i make	8
left i pull				15
left i put				20
left i run	-19			33
left i set	-14	-6		26
left i swap	-27			35
left i take	-23	-19	-6	17		18
left i think			7
left i use	-16			26
left i want	6			-12
left i will	7
left i'd like	-31	36		-5
left i'll	4
left i'll need		-11	20
left i'll want	-21	23
left i'm	12			-7
left i'm at	16
left i've	22	-8	-8
left i've get	-26	-5	45
left i've put	16			-6
left if	6
left in about	29		-14	-20
left in at	20
left in for	10
left in the				-5
left in with		13
left inside		4
left inspector want	25	-12
left instead of	23			-18
left into	22
left is at	14
left is for		12
left is in	-5		17
left is on	7
left is only	16
left it	13
left it T		-19	-5	14
left it and	-26	6		17
left it at	19
left it be	25
left it before	17
left it by	21	-16
left it for	-16	11
left it from				10
left it have	26		-16
left it in	-11			26
left it on				12
left it out	-13			18
left it take		-18	-18	19
left it to	40			-12
left it up	20	-12		-11
left it with				10
left it's get	-14	5	-21	16
left it's in	19
left its last	20
left job	-7			12
left just	21
left just need				-10
left kill	6
left land	16
left last		-7
left last of	-27	-8		36
left laundry	12
left lay	-12			26
left leave in	8
left leave of	-4		16
left leave on	15
left lift	7
left little	8
left living room	17
left long	25			-12
left loose	24
left lose	26
left make	40	-12
left master bath	8
left match	16
left maybe	-24		40	-4
left me	-12	21
left me up	-19	31
left measure	7
left meet	11
left miss		13
left miss at	6
left mix		-8	-8	20
left more than	10
left move	22
left mud and				10
left must be	8
left near	20
left need		19
left need G	-7	15
left new	-30	33	-12
left nick	8
left nobody	8
left nobody touch	6
left not	22
left notch	16
left number N	10
left of G		-19	9
left of the	57	-12	-4	-32
left off	12
left off with	21			-6
left office	11
left old	24			-7
left on	7
left on all	14	-16	-5
left on every	23
left on in	17
left on it	-14			7
left on the			-7
left once	13
left one's	25
left only		-19	21
left only get	-49	-15	46
left only have	-38		-5	29
left opened up	5
left or		7
left order	-14	23			9
left other				-5
left out	4
left out of	34
left out with	-26	-13	-8	10	28
left outta	28	-4
left over	29
left over by	21
left over to	23
left paint	22
left pantry	21
left pass				10
left past	27
left patch	20			-9
left pick	14
left pick up	-20	7	-10	-19	32
left piece of				5
left plane	4
left plug	21
left point	22
left pop	9
left porch	11
left pour	-23		-13	29
left prime		-19		10
left push	6
left put				4
left put in	-20	-21		33
left quick	19
left rate	10
left read	19
left replace		5
left return		-20		-20		26
left right	-15	20
left right down	12
left right through	15		-10	-4
left ring	15
left rip	6
left roll	5
left round	10
left sand	-14	7	11
left say	23
left scrape	13
left screw	-12		-10	23
left scribe	28
left seal	11
left see	11
left send	-11	7				12
left send is			12
left set				23
left she	9
left she want		5
left she's get	-10		12	-12
left short	-17	27		-19
left short by	-10	21		-16
left short of	-10	16
left short on	26
left shut	9
left shy of		-14		12
left side	5	-8	-10	8
left sign	-17		23	-6
left since	15
left sister	8	-7
left sit		7
left sit in	9
left sit on	18
left snap	14
left so	9
left somebody run	25	-5
left split	9
left stack	-10	-9	-5	21
left start	6
left stick	-12			13
left still	-9		25
left still get	-22		30	-13
left still have	-15		30
left still in	-8	-16	22	-8
left still need		9
left still on	15
left strip	23
left stuff	-18	15
left swap	-12			36
left take	-21			11		15
left test	6
left than	13
left that	8
left that be	-14	-22	-16	28
left that eat			-8	21
left that with	-7			21
left that's	-13	8		8
left the G	41
left the kitchen	31			-14
left the lady want	-18	23
left the last	11		-11
left the leave	9
left the other		16		-14
left the right	-15	20
left the wrong	12
left them				-5	15
left then	7
left there be	34			-15
left there is	-10	-27	27	-18
left there's			17
left there's only	-14	-17	28	-28
left they want	-5	9
left thing	-14	-12	21	-8
left think			7
left those	14	-10
left those and		30	-13	-12
left through				33
left throw	-35	26	-5	5
left tighten	19
left tile	14
left till	15
left time	9
left to	5
left to be	12
left to bring	7
left to do	19
left to get	15
left to move	15
left to pull	14
left to put	-32	32		14
left to see	12
left too	22
left top		8
left top of	15
left touch	7
left toward	5
left try		-15	16	-10
left turn	20
left under	21
left under it		14
left until	17
left up at	8
left up from	13
left up in	22			-8
left up on	-24			32
left up with	9
left us	-9	23
left use				34
left use about	-16			29
left use up	-20			30
left wait on	-7	15
left wall	12
left wall to	5
left want		7
left wash	14			-5
left way	8
left we	13
left we finish	12
left we get			5
left we have				-11
left we need	-5	21
left we put	-5	5
left we use	-16			40
left we want	-23	26
left we're	8	5	-16	-14
left what	18
left when	20
left where	12
left which	8
left why	13
left will	7
left with				7
left with the	-13	-15	19
left without	6
left won't	9
left wouldn't	7
left you	26	-7
left your	10
left1 &	-20	10		14
left1 '	9
left1 (	-7	7	-9
left1 +	-13
left1 -	9
left1 /	28
left1 @	28
left1 a		-17			15
left1 above	14
left1 across	13
left1 add				9
left1 again	7
left1 against	21
left1 all				25
left1 along	19
left1 already	12	-8	4	-5
left1 are	34
left1 around	24
left1 as	29
left1 ask	18	-5		-7
left1 at	24
left1 attic	12
left1 b	18	-4
left1 back						21
left1 bar	10
left1 basement	13
left1 bath	11
left1 bathroom	9
left1 bedroom	11
left1 before	21
left1 behind	17
left1 below	13
left1 bend	17
left1 between	26
left1 blow		-5		6
left1 box	22
left1 break	-13	14
left1 bring		15
left1 burn	-7	-6		21
left1 buy	-14	9		-6
left1 by	17
left1 call	7
left1 can't	6
left1 caulk	13
left1 change		7
left1 check	12
left1 choose	9
left1 clean	14
left1 clear	15
left1 clip	-28		9	10
left1 closet	8
left1 come		-7	6
left1 count	-23	12	24	-23
left1 crack	8
left1 cut out	14
left1 dead	15
left1 dig	15
left1 dining room	10
left1 do	4
left1 don't	7
left1 down				16
left1 drill	21
left1 drip	16
left1 drive	-9	-9		26
left1 drop	6		4	-4
left1 eat	-8	-15		29
left1 em	-15	25		-4
left1 every	12
left1 except	8
left1 fifth	16			-7
left1 figure		17	-16	-21
left1 fill	23			-8
left1 find	7
left1 first	-6	20	-13	-18
left1 fit		-8		12
left1 flush	16
left1 foam	-9	-17	-7	29
left1 forget	-8	15
left1 from	5
left1 get			18
left1 give	21
left1 glue	41			-12
left1 go				9
left1 good		-14	17	-7
left1 gotta	4
left1 grab					16
left1 grind	-7			14
left1 half	-22		27	-13
left1 hall	8
left1 hang				8
left1 have			6
left1 he	5
left1 here	-29	-18	34	-17
left1 him				-8
left1 hit	21
left1 hold	21
left1 how	12
left1 i	10
left1 i'll	4
left1 i'm	12			-7
left1 i've	22	-8	-8
left1 if	6
left1 inside		4
left1 into	22
left1 it	13
left1 job	-7			12
left1 just	21
left1 kill	6
left1 land	16
left1 last		-7
left1 laundry	12
left1 lay	-12			26
left1 lift	7
left1 little	8
left1 living room	17
left1 long	25			-12
left1 loose	24
left1 lose	26
left1 make	40	-12
left1 master bath	8
left1 match	16
left1 maybe	-24		40	-4
left1 me	-12	21
left1 measure	7
left1 meet	11
left1 miss		13
left1 mix		-8	-8	20
left1 move	22
left1 near	20
left1 need		19
left1 new	-30	33	-12
left1 nick	8
left1 nobody	8
left1 not	22
left1 notch	16
left1 off	12
left1 office	11
left1 old	24			-7
left1 on	7
left1 once	13
left1 one's	25
left1 only		-19	21
left1 opened up	5
left1 or		7
left1 order	-14	23			9
left1 other				-5
left1 out	4
left1 outta	28	-4
left1 over	29
left1 paint	22
left1 pantry	21
left1 pass				10
left1 past	27
left1 patch	20			-9
left1 pick	14
left1 plane	4
left1 plug	21
left1 point	22
left1 pop	9
left1 porch	11
left1 pour	-23		-13	29
left1 prime		-19		10
left1 push	6
left1 put				4
left1 quick	19
left1 rate	10
left1 read	19
left1 replace		5
left1 return		-20		-20		26
left1 right	-15	20
left1 ring	15
left1 rip	6
left1 roll	5
left1 round	10
left1 sand	-14	7	11
left1 say	23
left1 scrape	13
left1 screw	-12		-10	23
left1 scribe	28
left1 seal	11
left1 see	11
left1 send	-11	7				12
left1 set				23
left1 she	9
left1 short	-17	27		-19
left1 shut	9
left1 side	5	-8	-10	8
left1 sign	-17		23	-6
left1 since	15
left1 sister	8	-7
left1 sit		7
left1 snap	14
left1 so	9
left1 split	9
left1 stack	-10	-9	-5	21
left1 start	6
left1 stick	-12			13
left1 still	-9		25
left1 strip	23
left1 stuff	-18	15
left1 swap	-12			36
left1 t defect.	9
left1 t finish.	-18		6	10
left1 t fixture.	33
left1 t surface.	19
left1 t tool.		-9	20	-18
left1 take	-21			11		15
left1 test	6
left1 than	13
left1 that	8
left1 that's	-13	8		8
left1 the wrong	12
left1 them				-5	15
left1 then	7
left1 there's			17
left1 thing	-14	-12	21	-8
left1 think			7
left1 those	14	-10
left1 through				33
left1 throw	-35	26	-5	5
left1 tighten	19
left1 tile	14
left1 till	15
left1 time	9
left1 to	5
left1 too	22
left1 top		8
left1 touch	7
left1 toward	5
left1 try		-15	16	-10
left1 turn	20
left1 under	21
left1 until	17
left1 us	-9	23
left1 use				34
left1 v buy.	-19	25			18
left1 v have.			6
left1 v measure.	7
left1 v need.		18
left1 v return.	-9	-29				24
left1 v say.	8
left1 v see.	26
left1 v use.				34
left1 wall	12
left1 want		7
left1 wash	14			-5
left1 way	8
left1 we	13
left1 we're	8	5	-16	-14
left1 what	18
left1 when	20
left1 where	12
left1 which	8
left1 why	13
left1 will	7
left1 with				7
left1 without	6
left1 won't	9
left1 wouldn't	7
left1 you	26	-7
left1 your	10
left2 (		-25	17	-6
left2 )	23	-17		-11
left2 -	-11	22	-8	-19
left2 /	-9	12
left2 1	17
left2 about	24			-17
left2 across	10
left2 after	5
left2 again				20
left2 ain't	20
left2 air	13
left2 already	-12	-8	6			14
left2 am		-7	11	-8
left2 and	-5	19
left2 arrive	10	-14
left2 at	10		-12
left2 attic	-10			16
left2 away	20
left2 b	8
left2 back	9
left2 bad	23	-19
left2 bag	-17	6		17
left2 bath	17
left2 bay	17
left2 be				-11
left2 bead				9
left2 behind	8
left2 bend	18		-7
left2 between	30			-6
left2 big	12
left2 black		-20	13	-15
left2 block				19
left2 blow	18
left2 board				-6
left2 bolt	-11			23
left2 book	20
left2 bottom	29
left2 box	-9	14
left2 bracket		11
left2 break	10
left2 bring	-15
left2 burn				21
left2 buy	-6	8			5
left2 by				-21
left2 can	25
left2 can't	24
left2 cap	-23			26
left2 ceiling	21
left2 change	-18	-21	-5	27
left2 check	13
left2 clean	24
left2 clear		10
left2 clip	16	-7	-5
left2 close				6
left2 closet	17
left2 coat				10
left2 code	17	-14
left2 come		-6			12
left2 could	5	18		-30
left2 cover	27			-14
left2 crack	12
left2 cut			9
left2 deck	6
left2 deep	7
left2 didn't	-18	17	4	-11
left2 ding	13
left2 dining room	21
left2 dog	16
left2 don't	45
left2 down			23	-30
left2 drill	9
left2 drip	21
left2 drop	24
left2 each	27	-22
left2 eat				8
left2 edge				4
left2 electrician	11
left2 em	39			-20
left2 end	5
left2 every				10
left2 fill	-17	-16	-7	30
left2 fine		-5		12
left2 finish				5
left2 flash	16			-4
left2 flat	19	-11
left2 floor	27
left2 foam	-20	-4	-7	27
left2 for				-7
left2 forget	5
left2 frame	8
left2 front	15
left2 full	20
left2 garage	21			-10
left2 give				-11	15
left2 glue	-5			8
left2 go				13
left2 gonna		4		-12
left2 good	31
left2 gotta	9
left2 grab	13
left2 gray	20		-24	-16
left2 guy	27
left2 half	-8	-4	20	-10
left2 hall		-4		15
left2 hand	27	-7
left2 hang	4
left2 hard	8	-19	-7	9
left2 has				6
left2 have			8
left2 he	10
left2 head		5
left2 her	32	-13
left2 here	20
left2 high	11
left2 hold						15
left2 hole	23
left2 holes				8
left2 homeowner	21
left2 hook	20
left2 house	23
left2 i'd	-9	28	-7	-17
left2 i'm		29
left2 i've	-13		34
left2 if	23	-5
left2 in	51
left2 inspector	28	-7
left2 instead	23			-18
left2 it'll		5
left2 it's	20
left2 just				11
left2 keep	15
left2 kit	-14			15
left2 kitchen	25			-10
left2 ladder	21
left2 land	6
left2 last	-32	8	-13	28
left2 lay	-21	9	4
left2 leak	15
left2 leave			34
left2 let		-13		9
left2 let go	25		-9
left2 level				10
left2 lid	-14	-11		24
left2 lift	13
left2 like	-21	-27	-17	34
left2 line	-16			21
left2 long		19
left2 loose	18
left2 lose	-7			16
left2 lot	12	-21		-5		17
left2 make	-4	15
left2 mark.	-5	9
left2 me			5
left2 miss	-10	27
left2 move	22			-15
left2 mrs	11
left2 mud				10
left2 must	23			-10
left2 nail		-6		20
left2 need	-12	14	5	-6
left2 never	36	-20
left2 no	30
left2 nobody	20
left2 nothing	29
left2 now				14
left2 number	22
left2 of				-13
left2 off	17
left2 old	8
left2 only		-24	19
left2 open	-8		10	-10
left2 order	-7	13
left2 out	13
left2 over			8
left2 owe	-20	21	-17	-21	17
left2 owner	30	-4
left2 pack	-19			27
left2 pantry	-11	-5	-18	20
left2 patch	18
left2 peel	18
left2 pick	-16	6	-8	-19	31
left2 pipe	9
left2 place	-14			21
left2 plate	-6	17
left2 plug	22
left2 plumber				8
left2 prime	17
left2 pull	26
left2 put	-12	-17		39
left2 ready	16
left2 right	15
left2 rip				4
left2 rise	15
left2 roof	17			-4
left2 run				7
left2 sand	30
left2 say		5
left2 scribe		6
left2 seal	-19			29
left2 second				10
left2 second coat	-7		18
left2 see				13
left2 send	-10	-9	5	-8		21
left2 set	24	-6
left2 she	4
left2 she's			5	-10
left2 sheath	19
left2 sheet	13
left2 shim	-12	-13	12	10
left2 shop	-13	-24	12	7
left2 short		21
left2 should	26	-6
left2 shy		-9		8
left2 side	39
left2 silicone		-21		-10	23
left2 size	14
left2 skim	8
left2 slab	22			-19
left2 slip	25	-11	-21	-22
left2 so				9
left2 soft	-30		17			19
left2 somebody	7
left2 somebody's	13
left2 sound	24	-10
left2 splice	27			-9
left2 spot	5
left2 squeak	4
left2 stain	14
left2 stairs	23
left2 stand	16
left2 stay	-11	-17	28	-12
left2 still			13
left2 strip	17
left2 swap				13
left2 t	11	-10
left2 t area.		-11
left2 t defect.	9
left2 t fixture.	13
left2 t role.	8
left2 t tool.	20
left2 t work.	16
left2 take				-13		15
left2 tear	10
left2 tell	19
left2 test	21
left2 that				7
left2 that's		-8		5
left2 the lady	-9	16
left2 them	19
left2 there's	-4	-11	34	-28
left2 they	4
left2 they're	20
left2 this	20
left2 those		8
left2 through	21
left2 tight	13
left2 tile	20
left2 till	24
left2 too	19
left2 top	13
left2 try		12
left2 turn	17
left2 under	16
left2 underneath	16
left2 unit	-18	-10		-13		25
left2 up	7
left2 upstairs	20
left2 use	-35			57
left2 v buy.		4
left2 v have.			8
left2 v need.	-11	7	13
left2 v say.	4
left2 v use.	-35			57
left2 walk	13
left2 wall			6
left2 walls	30		-26
left2 want	9
left2 water	20
left2 way	-4			14
left2 we'll	-25	31
left2 we're	-15	13	8	-18
left2 where	9
left2 which	13
left2 white	-19	10	12	-11
left2 whoever	9
left2 wide	19
left2 will		26
left2 wire	21
left2 with				9
left2 wobble	9
left2 won't		10
left2 work	13
left2 would	-12	16
left2 wrap			9	-5
left2 wrong	21
left2 you	30
left3 )	15
left3 +	16
left3 -	5
left3 N	28	-9
left3 T			4
left3 after	16
left3 all	-9			13
left3 already				13
left3 an		6
left3 and	-16	17
left3 another		5	-20	10
left3 are	-8			37
left3 back	-38			20		25
left3 be	23
left3 before	21	-9
left3 big	10		-14
left3 black		5
left3 blow	-11	16
left3 board	-31	25	10
left3 both	30	-5		-21
left3 bottom				8
left3 box	11
left3 break	22	-5
left3 buy	6	-18	-5	-9	7
left3 call	15
left3 can't	-17			22
left3 caulk	-30	10	23	-12
left3 ceiling	9
left3 clamp	7
left3 clean				10
left3 corner	-11					23
left3 day	24		-5
left3 dent	19
left3 don't	8
left3 down		-11	8
left3 drain			-6	8
left3 drill	17
left3 drop	12
left3 dump	13
left3 each	19	-24	-11	7
left3 electrician	31	-18
left3 em	38	-20
left3 end	-4	-8		15
left3 every				9
left3 falls	10
left3 fill	-5			15
left3 find	13
left3 finish	-21	-8		30
left3 flat	20	-5
left3 float	-11		-14	18
left3 floor	-4			12
left3 for				-20
left3 fre	20
left3 from	13	-18	-11	-11	19
left3 get	4
left3 give		-17	-19	13
left3 glue	39	-21		-9
left3 gonna		15	-10	-12
left3 gotta	18
left3 hall	30
left3 hand	15
left3 hang	7
left3 have	16
left3 he		-7			17
left3 her	34		-7
left3 hinge		6
left3 his	10	-5
left3 hit				13
left3 holes	31			-9
left3 hook	-14	-5	10	8
left3 hot	23
left3 i'll	15
left3 i'm			8
left3 i've	-19		20
left3 if	25
left3 inch		10
left3 it	10
left3 it's	14
left3 its	-4	12	-7
left3 joint	-16	7	12
left3 just		-13	11
left3 keep	17
left3 kitchen	17
left3 last	-24			26
left3 leave			15
left3 let	13
left3 like	21
left3 line	7
left3 long	-11	18
left3 loose				12
left3 make	4			-7
left3 maybe	-12		19
left3 measure		9
left3 miss	17
left3 more	-7	16
left3 move	5
left3 must	-4	13		-5
left3 my	31
left3 nail	8
left3 new		-8		8
left3 nobody	28
left3 nothing		12
left3 number	27			-13
left3 off	27
left3 office	7
left3 old	16
left3 only	26
left3 open	16
left3 order	8
left3 out	50			-10
left3 outside	31	-13
left3 owner	-4	15
left3 pack		13
left3 paint		-7	8
left3 painter	13			-8
left3 patch	4
left3 pick		20
left3 pull	26	-6
left3 read	16
left3 replace	-7			16
left3 right	23
left3 rod	28			-11
left3 roll	-16		24
left3 run	37
left3 sand	12
left3 say		-14	12
left3 screw		13
left3 second floor	10
left3 see	8
left3 send	-18	22				6
left3 she		5		-10
left3 she's	36
left3 shim	19			-13
left3 shop	-23	35	-17	-21
left3 short	-15	20
left3 side				11
left3 sister	-18	14
left3 sit	14
left3 so	-19	27	-17
left3 somebody	-9	16		-8
left3 somebody's	12
left3 still	-7				14
left3 stop	8
left3 supposed	-7	19
left3 swap	-6	4
left3 swing		11		-7
left3 take	5
left3 tape	44	-15		-16
left3 that's				6
left3 the lady	-18	-19	25
left3 their	-4		18
left3 them	-5	-17	15
left3 then	19		-5
left3 there		-4	9	-7
left3 there's	34
left3 they	9	-20	16
left3 they're	17
left3 this	18
left3 those		-8		12
left3 through	5		-5
left3 tie		-18		7
left3 tile		7
left3 too		9
left3 top	17
left3 truck	18
left3 turn	10
left3 under				10
left3 up				5
left3 us	-6	16
left3 use	31			-21
left3 wall	9
left3 want	13
left3 water	18
left3 we're			14
left3 weight	32	-19	-12	-14
left3 were	20
left3 what's		9
left3 when			4
left3 where	7
left3 which	10
left3 white		16		-20
left3 whole	21
left3 wire		-12	-11	10
left3 within	18
left3 wrap	-9			6
left3 x		21		-9
left3 you	16
length after have far	-27	29	-10
length after have here	28	-6	-14	-9
length after need far	-9	-28	14
length after need here	13
length after need sentence		23	-23	-29
length after none far		11		-22
length after none here		8
length after none sentence		12
length after used sentence	-28		18
length beside figure	-11	20		-5
length beside get	-37	5	28	-14
length beside is	13	-6
length beside like		6
length beside need		25
length beside need b nobody		17
length beside need b person	-6	24
length beside nothing	-9
length beside other b nobody		8	-10
length beside other p other		-12	17	-15
length beside other pp other	15
length beside run		-13	-13	7
length beside undefined is other	14	-9
length beside use	-19			29
length beside use pp nobody	-11			20
length beside want	-13	26
length beside work b nobody	20
length beside work b other		11	-6	-6
length beside work pp nobody	13	-12	-11
length beside work pp other	28	-15		-16
length beside work pp person	-27	-11	-6	34
length beside work s other				12
length buy imperative behind	6
length cue ate	-11			16
length cue back	12
length cue came		6		-10
length cue have	-29		56	-28
length cue lacks	22
length cue need		41		-9
length cue used	-5	-5		31
length flawed	10
length have present behind	-12	-24	27	-9
length kept	-19	13	11	-16
length left #	-18	8		21
length left about	-17		8
length left and	-17	34
length left at	33	-7		-11
length left by	9
length left every	33	-14	-5	-26
length left figure	-11	20		-5
length left for	27
length left get	-29	7	22	-12
length left in	11	-20
length left is		-5		10
length left need	-37	53
length left of	25	-27			11
length left over	33
length left run	-5	-12	-12	16
length left the	31	-22
length left up	-18		-6	19
length more		7	-5
length name flawed	-21	16	15	-8
length named before fixture	19
length named before surface	-10	-18		28
length named before word				4
length named here finish	-10		6	6
length named here material	-37	50
length named here part	-16	23
length named here surface	-29	6	7	9
length named here word		23	-6
length need modal behind	-21	34	-8
length need owed behind		9
length null copula behind	15
length null none no	-6	5		4
length other copula behind	10
length other imperative behind		16	-9
length other modal behind	-18	15		5
length other past behind	-15	-22	31	-16
length pointing	-18	-10	27
length right Q	34	-26		-9
length right across	19
length right and		11
length right down	26			-4
length right from	22	-18
length right leave	-36	-9	44	-14
length right on				-10
length right short	-5	14	-6	-7
length right to	8	5		-14
length right up		-25	-8	20
length right with	15	-21
length says copula before	-32	18	8
length says copula behind	17	-8
length says copula behind not	8	6	-7	-14
length says imperative behind	11			-7
length says modal behind	-14	28
length says none no	-6	5		4
length says owed behind		15
length says past before	-32	-29		32
length says past behind	-5	-26		16
length says present behind	-23	8	15
length sized	-80	25		41
length sold so true	-11	25
length then move pp	-17	-11	38	-18
length then work b	-14	18
length then work pp	-19			20
length use past behind				18
length verb be behind	10
length verb get behind	-39	11	28	-11
length verb have behind	-12	-24	27	-9
length verb need behind		13
length verb null behind	15
length verb null no	-6	5		4
length verb pull behind	-20			27
length verb put behind	-34		-4	31
length verb run behind		-18	-20	13
length verb use behind				18
length verb want behind	-17	29
length whole clause	-11	15	-12	10
length work imperative behind	31	-14		-5
length work past behind	-4	-26		23
list have	-17	-6	46	-50
list need	-19	52	-39	-51
list used	-17	-46	-37	52
many	49	-22
marked	-19	58	-5
meant back 1	-9
meant back 5	10	-20		-5
meant back 6	4	16		-33
meant back 7	21	-13	-5
meant back 8	63	-30	-38	-38
meant before more	-11	7	12	-26
meant before no		26		-5
meant flawed false	43
meant flawed true		12
meant place -		19	-18	-37
meant ran out	-17	41		-19
more	-7	50		-6
named before area			-23	24
named before fixture				5
named before surface	11
named before tool	-10		21
named before work	-17	-10	4		14
named here defect	19
named here role		13
named here surface	15
named here work	25
nameless	58
next copula other comma	34	-21		-20
next copula same comma	28
next copula same stop	21
next copula same word	4
next cue ate other		18		-24	5
next cue bought other	-11	7				17
next cue bought same		-19	10
next cue came other	11	-13
next cue lacks same	7
next imperative same stop	24
next modal same and		8
next modal same word	6
next none other comma	-37	29	-10	12
next none same run-on	46
next none same stop	15
next none same word	17
next past other stop	5
next past same and				33
next past same stop	37
next past same word	9
next present same stop	38
next present same word	12
next undefined # undefined		10
next use buy imperative other		-4		5
next use buy imperative same	-18	47
next use buy modal other	30	-5		-13
next use buy modal same	-15	28
next use buy owed same	-38	33	21	-8
next use buy past other	38	-20
next use buy past same		-5			10
next use buy present same	-8	6		-37	6
next use have imperative same	40	-21	-13	-28
next use have owed same	-6			14
next use have present other	-10			7
next use measure modal other			18
next use measure modal same		-9
next use measure owed other	-11	22		-16
next use measure past other		-18		14
next use measure past same	42
next use measure present same	6
next use move imperative other			7
next use move imperative same	14			-5
next use move modal same			10
next use move owed same				-9
next use move past other	21
next use move past same		-11		13
next use move present other		20		-8
next use move present same	16
next use need modal other	24			-4
next use need past other	-22	-30	32
next use need past same			18
next use need present same				-15
next use null imperative other	-8	14
next use null imperative same			9	-14
next use null modal other				-9
next use null owed same	22
next use null present same	6	-21	11	-12
next use other modal other	-7				8
next use return past other	13			-4
next use return past same	-33	-8		-10		40
next use say imperative other	24			-8
next use say modal other		-8	16
next use say modal same	20
next use say owed same					8
next use say past other	-12			21
next use say past same	33
next use say present other	6	12	-18	-12
next use say present same	13
next use see imperative same	21
next use see modal other	12
next use see past same	7
next use see present other	6
next use see present same	20
next use use imperative same	-7	-22		17
next use use modal same			10	-32
next use use present other	22
next use use present same				9
next use work modal other	8
next use work owed same	17
next use work past other	29
next use work present other	18		-4
next verb add same	34			-14
next verb adjust same	14
next verb anchor same		7
next verb arrive other	13	-13			10
next verb ask other	10
next verb auger same	15			-9
next verb back same	24
next verb bed same	-19			25
next verb believe same	-13		19	-5
next verb bend other	9
next verb bin same	19	-7
next verb blow same	33		-16
next verb bolt same	-36	-16	-6	44
next verb book same	5
next verb borrow same	-8	10		-9
next verb box same	20			-6
next verb break same	9
next verb bring other	20	-29
next verb build same						10
next verb buy other	24	-25	11	-9
next verb buy same	14	-4		-11
next verb buzz same	31			-10
next verb call other	12	-6		-11
next verb call same	7
next verb can same	-19		15
next verb can't same	6
next verb cap same	38	-4		-12
next verb catch same	21
next verb caulk same	27
next verb change other	27	-6	-10
next verb change same		-18			20
next verb choose same		11	-6
next verb chuck same	24	-13
next verb clamp same	27			-12
next verb clean same	26
next verb clear same	19
next verb clip other	25	-5
next verb close same	-9	10
next verb coat same				7
next verb come other		26		-24
next verb complete other		14	-20	-9
next verb consum other		-11	16	-14
next verb correct other	15
next verb count same		-29	26	-34
next verb cover same		6
next verb crack other			13	-19
next verb crack same	27
next verb crosse other	13
next verb cut other	24
next verb cut out same	28			-15
next verb dig same	26			-6
next verb do other	-16		-22	24	16
next verb do same		13
next verb don't same	7
next verb drain same			-9	17
next verb draw same	29
next verb drill other		-9		6
next verb drill same	32
next verb drip other	-13	-15		32
next verb drip same	-10	20		-6
next verb drive same				15
next verb drop other	26			-7
next verb drop same	17
next verb dry other	-6	4	-24	14
next verb eat same	13
next verb either same	25		-5	-17
next verb empty same	-28	-18	-24	-12	34
next verb feather same	29
next verb feel same	12
next verb figure same	34	-17
next verb file same	22
next verb find other	11	-18	-8	7
next verb find same	32
next verb finish other		-13	5
next verb fish same	8
next verb fit other	18
next verb fit same	-12			18
next verb flip same	14
next verb float same	18
next verb forget same	-17				16
next verb frame same	17
next verb fre same	18
next verb get other	14			-13
next verb give same		-35		-29		41
next verb glue other	38	-11		-26
next verb go other		36		-10
next verb gonna same	10
next verb gotta same	11
next verb grab other	18
next verb grab same	-30	41
next verb grind same	14
next verb grout same				6
next verb guess same	26	-5
next verb hang other		13
next verb has same	14
next verb haul same	5
next verb have other	-8			5
next verb hit other	14			-8
next verb hold other	10	-24		13
next verb hold same	31
next verb hum other	18			-8
next verb hum same		9		-15
next verb i'd same	23	-16		-7
next verb jack same	5
next verb jam same	20
next verb keep other	20
next verb kick same	14
next verb know same	27
next verb land other	8
next verb land same	14
next verb laugh same	11
next verb lay other	-14	-21	-14	30
next verb lay same	10			-16
next verb leak other	10
next verb leak same	12
next verb lean same	-11	5	-11	13
next verb leave other	17	-12
next verb leave same		-7	13
next verb let same	7
next verb level same	8
next verb lift other		-20		11
next verb lift same				-8
next verb like other	-17	18		-17
next verb lit same				11
next verb lock other			12
next verb look other	21
next verb lose same	7
next verb make other	19
next verb make same	36
next verb mark same	24			-17
next verb measure same	10
next verb mention same	15
next verb miss other				4
next verb miss same	20
next verb mount same	-31	21		17
next verb mud same	37			-24
next verb must same	30
next verb nail same				9
next verb need other		-4
next verb notch same	18
next verb notice same	21
next verb open same	5
next verb order other		-27	9	9
next verb order same	-21	35		-27	6
next verb owe other	-8	18
next verb own same	13
next verb paint same			25	-30
next verb pass other	20
next verb pass same				15
next verb patch other	11
next verb patch same	39
next verb pick other	26
next verb pin same	31		-25
next verb pitch same		-19		8
next verb place same	17
next verb plane same	29
next verb plug other	11
next verb plug same				16
next verb point same	19		-16
next verb pop same		20
next verb pour same				-11
next verb prime other	-24	-11		30
next verb promise same	21
next verb pull same	34
next verb pump same	21			-8
next verb purge other	19
next verb push same	21
next verb put other	14			-7
next verb raise same	8
next verb rake same	-15	-20	31
next verb rate same	24
next verb reach same	18
next verb read same	25			-14
next verb receive other		14
next verb recheck other		-12		13
next verb recut same	20
next verb redo same				4
next verb refix same	30			-18
next verb reglue other	22	-6		-9
next verb reglue same		9
next verb rehang same	17	-16
next verb reorder same	-30	38		-6
next verb replace other	21
next verb replace same	-6			16
next verb require other	-36	-23	29	14	-20
next verb require same	-18		22	-11
next verb reroute same	32	-8		-15
next verb reseat same	18
next verb reset same	10
next verb return other			18	-22
next verb return same	-35	-5				40
next verb ring same	7
next verb rip same	-8
next verb run other				9
next verb run same	15
next verb rust same	-13	-30	6	16
next verb sand same	15
next verb save same	23	-9
next verb say other		24		-9
next verb say same	22
next verb scrape same	5
next verb scribe other	10
next verb scribe same	13
next verb seal other	20
next verb seat same	5
next verb see other	31
next verb see same	11
next verb seize other	6
next verb send other		-4		16
next verb send same	-12			-22		22
next verb set other			13
next verb shave same	19			-7
next verb shim same	31
next verb short same	-19		-21		22
next verb should same	-13	26		-14
next verb show other	11			-11
next verb shut same	10			-7
next verb sign same	30			-10
next verb silicone same	-8			16
next verb sister same	39
next verb sit other	-4			21
next verb skim same	31
next verb slap same	-19	15
next verb sleeve same				4
next verb slip same	11
next verb smell same	10
next verb snap same	-17			21
next verb snug same	29
next verb solder same	5
next verb spin same	18
next verb split same	21
next verb spray same	-17	-8	23	-12
next verb stack same	21
next verb stain same	23
next verb stand same		11		-5
next verb staple same	22			-11
next verb start same	5
next verb stay same	11	-5	27	-35
next verb stick other	6
next verb straighten other	17
next verb straighten same	9
next verb strap same	-7			13
next verb stretch same	13
next verb strip other	-7	-27		22
next verb stuff other	4
next verb stuff same	9
next verb supposed same	5
next verb swap other	-8		16
next verb swear same		-8		6
next verb swing same	-11			20
next verb tag same	16
next verb take other	-10	11		-28	11
next verb tap same	27		-9
next verb tell other	6	-4
next verb text same		9
next verb that'll same	12
next verb think same	17
next verb tie same	14
next verb tighten same				9
next verb top same	8	-12	6
next verb touch same	38	-14
next verb trim same	7
next verb trip same	41			-21
next verb try same	39
next verb tuck same	7
next verb turn same	34			-10
next verb wait same		4
next verb walk same	-12					12
next verb want other	-8		17
next verb wash same	13
next verb weep other	-4			12
next verb will same		9	-7	-4
next verb wipe same				5
next verb wire other		5
next verb wire same				15
next verb won't same	18
next verb work same	24
next verb would same	14			-5
next verb wouldn't same	25		-6	-12
next verb wrap same	13			-9
next verb wrote same	-21	25
next verb yank same	-8			13
one after bought sentence	-28	17	-15	-25	21
one after have far	15
one after have here	30	-16
one after have sentence	15
one after need far	-6					10
one after need here	-10	29
one after need sentence	-4
one after none far	-17
one after none here	32
one after used far					17
one after used here	-5	-15		21		6
one beside add	-6	6
one beside ask		7
one beside be	-5		15	-5
one beside bring		6
one beside buy	-15	-4		-15		19
one beside buy b nobody	-17	30
one beside buy b other	-12	22
one beside come	4	6
one beside cut	8	-32		8
one beside do	-4	10
one beside drip		-7		12
one beside eat		-7		10
one beside find	25			-12
one beside get	-6
one beside grab	-20	28
one beside hang	6
one beside has				-12		12
one beside have b nobody	13	-15		-13
one beside have b other		5
one beside have pp other	30
one beside have pp person	-6	-5	-8	17
one beside hit	22
one beside hold	14
one beside is				-8
one beside leave	11
one beside like	4
one beside lose	16
one beside make	30
one beside measure bpp other	21
one beside measure i other	9
one beside measure p other	39
one beside measure pp person	-6	16
one beside measure s other	25
one beside miss		10
one beside move b other	7			-10
one beside move b person	11
one beside move pp other		-10	7
one beside move pp person				7
one beside need		13
one beside need b nobody	-40	45
one beside need b other	17	-5
one beside need b person		7
one beside need s other		13
one beside order	-10	8		-6	19
one beside other b nobody	-18	28
one beside other b other		10		-13
one beside other b person					7
one beside other i other	-5	17
one beside other i person	13		-4	-7
one beside other p other		-25		6
one beside other p person	-19		29
one beside other pp nobody	19	-8	-6
one beside other pp person			7
one beside other s other	22			-13
one beside owe	-28	22	-8	-16	18
one beside pick	10	-6
one beside pull	9
one beside push	4
one beside put	-14			31
one beside rip	5
one beside run	5
one beside say	22
one beside see	29	-7
one beside send	-13	26
one beside set		-4		6
one beside sister	-15			25
one beside sit	21
one beside stick	-14			14
one beside swap	-43	12		33
one beside take	5	10		-19
one beside throw		7
one beside try	-8	-12	19	-12
one beside undefined has other				-10		13
one beside undefined is other				-11
one beside use pp nobody				11
one beside use pp person	14			-9
one beside want		7
one beside work b nobody	25			-31
one beside work b person	14
one beside work bpp nobody		-6		26
one beside work bpp other	25	-8
one beside work bpp person	-11			28
one beside work i other	34
one beside work i person		21		-23
one beside work p person	22
one beside work pp nobody	-7	-16		33
one beside work pp other				15
one beside work pp person				14
one beside work s other	19
one buy imperative behind	-7	23
one buy past behind	-42	-25		-24	30	18
one cue ate				5
one cue bought	-34	-13			27	15
one cue came	-31	13	7		12
one cue have	-14
one cue lacks		7
one cue need	-8	52
one cue used				10
one false	-5
one kept	-28		16
one left #	-18	15		6
one left +	-14	11		6
one left G	12			-16
one left about	40
one left add	-6	6
one left and	-18	17		7
one left as	30
one left at		-5		5
one left be	-9		12	-9
one left bring	-7	22
one left buy	-15	-4		-15		19
one left by	27	-16
one left cut		-16		12
one left down	7	-22	-8	4
one left for		15
one left from				9
one left glue	22
one left grab	-8	14
one left has	-9		7			14
one left hit	19
one left hold	7
one left in	5			7
one left is		-24		-12
one left it's		25	-8	-4
one left just	26
one left leave	15
one left like	11
one left make	12
one left me	-16	39
one left miss		10		-7
one left need		20
one left not	15
one left of	9	-8
one left off	29
one left on	12
one left order					21
one left over	23
one left push	4
one left put	-5			13
one left rip	5
one left run		7
one left send		10
one left set	-4			13
one left sister	-12			21
one left stick	-21	9		18
one left take		18		-15
one left that's	10	7		-27
one left the		10		-25
one left them	5	-42	-8	-14	23
one left there's	37
one left to	38			-17
one left up	7
one left use	-22			42
one measure modal behind	-37	40		-14
one measure past behind		8
one measure present behind	30
one more	10			-7
one move owed behind	-11	-7	-16	-16	23
one move past behind	11
one move present behind	16
one name flawed	6
one named before area	-17	14
one named before material	-20	22
one named before part	-47	10		21	14
one named before surface	37	-11
one named before tool	-27	12	15
one named before word	16			-14
one named here defect	26
one named here finish	-34	45	-9	-21
one named here material	-13			11
one named here part	-56	16		35
one named here surface	35
one named here tool	6	14		-24
one named here word	32
one need owed behind		22
one need present behind	8
one not ahead	29
one null copula before	-9	24	-13	-22
one null modal behind	-13	26	-14	-14
one null none no	-14	6		8
one other copula before	-10	4			7
one other imperative behind	-15	19		-5
one other modal behind		17
one other owed behind		13	-5	-11
one other past before	17			-34
one other past behind	-4		18
one other present behind	8				11
one right Q	-4			15
one right T				-19	5
one right a	-20	27		-6
one right about	33
one right all				6
one right and	-32	42
one right are	-16		-6	17
one right at			10
one right before	11			-12
one right behind	-10	-22	17
one right for	14
one right from	12	-12
one right go	8
one right has	25	-8
one right in	-5			15
one right is	-10	17
one right leave	18	-5		-10
one right no	45	-37		-15
one right now	12	-5
one right of				13
one right or	27	-19
one right out	-19	12		15
one right over		-23		23
one right right	12
one right that	6			-6
one right the	-13	19			8
one right there		17		-18
one right through	30
one right to	29	-6
one right under				15
one right up	24	-20
one right when		17
one right with	27			-10
one say imperative behind	15
one say present behind	4
one says copula before	-23	26	-10
one says copula behind not	23			-5
one says imperative behind		18
one says imperative behind not	8
one says modal before	-5	12		-6
one says modal behind		28
one says modal behind not		9
one says none no	-16	5		13
one says none no not		6		-11
one says owed before	18
one says owed behind		15
one says owed behind not					18
one says past before	-14	4	-28	22
one says past behind				10
one says past behind not	-4	-8		24
one says present before					4
one says present behind not	26
one sized	-34	35
one then move b		14		-20
one then move p	13
one then move pp	28	-22	-6
one then move s	28	-12
one then other b	5
one then other i	-29	21		18
one then other p	4	5		-28
one then other s	29	-10		-6
one then undefined has	14
one then undefined is	-7	4			5
one then undefined will	-6			-13	16
one then work b	14	7		-29
one then work pp	-8	-27		47
one true		44
one verb add behind	-17	18		4
one verb ask behind	11
one verb be before	-10	4			7
one verb bring behind		16
one verb buy behind	-16	-5		-13	6	17
one verb come behind	-11	23		-9
one verb cut behind	6	-20		6
one verb do behind		-9	18	-20
one verb find behind	33			-18
one verb get behind	-13		14
one verb give behind		11
one verb glue behind		7		-8
one verb go behind		-7		-25	19
one verb grab behind	-13	23
one verb hang behind	-9			13
one verb leave behind	13
one verb like behind	-10	17
one verb lose behind	16
one verb make behind	27
one verb need behind		10
one verb null before	-9	24	-13	-22
one verb null no	-14	6		8
one verb order behind		-8			24
one verb owe behind	-24	11		-7	20
one verb pick behind	5
one verb pull behind	10
one verb push behind	4
one verb put behind	-9			24
one verb rip behind	5
one verb run behind	21			-23
one verb say behind	34	-11
one verb see behind	29	-10
one verb send behind		8		-6
one verb set behind		-6		6
one verb sister behind	-15			25
one verb sit behind	21
one verb stick behind	-16	4		15
one verb swap behind	-35	22		17
one verb take behind	18			-16
one verb throw behind		7
one verb try behind	-8	-12	19	-12
one verb want behind		9
one whole clause			-5
one work modal behind		17		-22
one work owed behind	29
one work past before	-40	10	-11	37
one work past behind		-8		37
opens &	7
opens +	7	-8
opens alright	14
opens also		7
opens anyways	8
opens because	45
opens boss	13
opens but	9
opens cause	17
opens clause area	-23	-12	-13	40
opens clause count	-29			17
opens clause length	-18	8		21
opens clause one	-18	15		6
opens clause pack	-24
opens clause volume	-33	11	6
opens clause weight	-27	5	-5	25
opens hi	15
opens like	17
opens man	9
opens now	22
opens oh	36	-5
opens ok	31			-9
opens please		29
opens plus		31	-25
opens right	8
opens then	23
opens well	5
pack after bought here		-39	-31	-30	38
pack after bought sentence	-13	-22	-27	-31	40
pack after have far	-20		21	-14
pack after have here	43		-10	-42
pack after have sentence	-14	27	4	-9
pack after need far		7	17	-28
pack after need here		38
pack after need sentence		37		-55
pack after none far	-31	7
pack after none here	-24	42
pack after returned far		4	-7		6
pack after used far		-10	10
pack after used here	-11	-11		31
pack after used sentence	-33			18
pack bag	32		-13	-36
pack beside be				5
pack beside bring	-7	9
pack beside burn	-5			26
pack beside buy	-26			-10	26
pack beside buy b nobody		10
pack beside buy b person	-41	9	-7	-8	20
pack beside call	-7	8	-24	7
pack beside come	-27	-40			32
pack beside eat	-13		-5	26
pack beside fill			-6	9
pack beside get			5	-8
pack beside go				20
pack beside grab	-24	28
pack beside hang	-21	-10	5	13
pack beside have	-10	-9	39
pack beside have b nobody	-10		28
pack beside have b person	-4		39
pack beside have pp person	37	-15	-29	-23
pack beside is	-11		18	-4
pack beside leave		-9	14	-21
pack beside move b other	20	-23		-22
pack beside move p nobody				19
pack beside move p other		-14	-12	20
pack beside move p person	-5			22
pack beside move pp other	19	-27		-13
pack beside move pp person	-32	-12	36	-13
pack beside need		6
pack beside need b nobody		20
pack beside need b other		23
pack beside nothing	-37
pack beside order	9
pack beside other b nobody		25
pack beside other b other	-25	40	-10
pack beside other b person	15		-18
pack beside other p nobody	-15	-31			15
pack beside other p other	-8	-35	-7	51
pack beside other p person		-11	46	-26
pack beside other pp nobody	-26	-32	17	-27	31
pack beside pick	-24	15	-14	-15	13
pack beside put	-21	9
pack beside run		-21	-8	13
pack beside set	12	-25	-13	8
pack beside take	-50			28
pack beside undefined is other			8	-17
pack beside use				19
pack beside use b person			4	7
pack beside use pp person				39
pack beside want		17
pack beside work b nobody	-5		16	-13
pack beside work b other	-17	20
pack beside work b person		-41	7	11
pack beside work bpp nobody	-37	20	-25	6
pack beside work bpp person		-38		8
pack beside work i other	5	-15	-19	10
pack beside work pp nobody			-21	6
pack beside work pp other	-12		-31	27
pack beside work pp person	-12	-37		48
pack box	9	22	-19	-22
pack bucket		-29	24	-39
pack buy imperative behind		18
pack buy modal behind	-28	38
pack can	-19	15	8	-8
pack carton	-8		13	-25
pack cartridge		-5	-7	6
pack coil	35	-7		-20
pack cue ate	-23			54
pack cue back	-23				17
pack cue bought	-42	-28	-42		53
pack cue came	-16	-28	39	-13
pack cue have		-4	66	-7
pack cue lacks	-9	49	-29
pack cue need		73
pack cue used				17
pack drum	16	-13	-10
pack flat	51	-29	-27	-20
pack have present before	9	6	-18	-5
pack have present behind	-25		42
pack kept	-9	-10	20
pack left #	-24
pack left +			-7	5
pack left G	-25	-29	-20	38	15
pack left Q	-34	51		-43
pack left T	-45	-39			31
pack left about	-6			10
pack left and	-6	36
pack left be	-9		-29	17
pack left bring	-18	6	10	-9
pack left buy	-13	22		-5	5
pack left from	11	10	-28	-27
pack left get	-68	4	37	-25
pack left go	-14	-14	-14	30
pack left grab	-29	18			9
pack left have	-7		20
pack left in	9			-9
pack left is	-6	24		-25
pack left it	-32	38	-16	-23
pack left last		-17	19	-14
pack left leave	-14	-24	36	-24
pack left of	14	-38	16	-23
pack left order	-14	25
pack left over	20	-17
pack left put		8	-11
pack left short	-15	33	-20	-6
pack left take	-37			27
pack left that's	-12	-40	-38	36
pack left the		-41	8
pack left there's		-33	24	-24
pack left through				34
pack left up		9	-15
pack left use				9
pack left want	-23	34
pack left with	-25		-42	45
pack length	20		-10	-12
pack list have	-37	10	19	-39	-17	-11
pack list need	-20	48	-30	-23
pack more		46	-16	-26
pack move past before	-14		32
pack move past behind	-6		6	11
pack name flawed	-9	24
pack named before area	-16	-37	-28	28		16
pack named before fixture	-6			16
pack named before part	8			-14
pack named before surface	5	-27	4
pack named here fixture		14	-11
pack named here material	-43
pack named here part		-6		-53	9	14
pack named here surface	-7	16	5	-26
pack named here word	-56		12
pack need modal behind	9	-18	17
pack need owed behind		29
pack need past before	-31	35	-19	-19
pack need present behind	-24	35
pack not ahead	-29	46		-13
pack null copula before	-8	25	-42	7
pack null copula behind	-27	9	23
pack null imperative behind	-15	28
pack null none no	-34
pack other copula before	6	-23	8
pack other copula behind	-23			29
pack other imperative behind		22
pack other modal behind	-19	39	-9	-25
pack other past behind		-25	11		8
pack other present behind	11	-7
pack pair	22	-12	-18	-4
pack pointing			-7			8
pack right #	-29
pack right +				13
pack right Q	-19			13
pack right T	-41	32
pack right and	-40	7
pack right are	-14	-20	25	-27
pack right be	9	-15	-14	6
pack right by	4		-22	-17	17
pack right for	-17	8	10
pack right from	-7	16		-32	20
pack right go	-35	-26	-36	52
pack right have	9	6	-18	-6
pack right in		-10	34
pack right is		-20	13
pack right leave			48
pack right more	5		-12
pack right no	39	-34	9	-27
pack right of	-17	16		14
pack right on			34	-43
pack right out	29	-19	-5	-21
pack right short	-33	40	-5	-5
pack right sit	6		-5	-10
pack right the	-47	21		14
pack right to	-25	23		-23		9
pack right up	19	-37	-20	18
pack right use	-8			27
pack right where		-17	-16	19
pack roll	-6	37	-24	-20
pack say imperative behind	-22	19	-31	9
pack say present behind	16		-7	-13
pack says copula behind	-35		22
pack says copula behind not	-17	31	-28	-31
pack says imperative behind	-17	53
pack says imperative behind not		-4
pack says modal before	-11	14	8	-24
pack says modal behind		27	-7
pack says modal behind not	-17	-26	33
pack says none no	-33
pack says owed behind		41
pack says owed behind not	10
pack says past before	-14
pack says past behind				22
pack says present before	14	11	-17	-28
pack says present behind	-13			5
pack says present behind not	30	-13		-5
pack sheet	30		-23	-27
pack sized	-17
pack sold so false	-39
pack sold so true	-37
pack stick	16	-20		-5		16
pack strip				6
pack then have b	8		-5	-14
pack then measure i	9	-22		-15
pack then move p	-37	-24	-35	55
pack then move pp			38
pack then need pp	-31	35	-19	-19
pack then other p		-16	-28	21
pack then other s	23	6	-9	-23
pack then undefined is	-14	-4	27
pack then undefined will	-32	35	-19	-5
pack then use pp	-8			27
pack then work b		-25	-22	17	17
pack then work pp	-12	-12	10	16
pack then work s	-19		13
pack tin				-28
pack tub	58			-20
pack tube		18		-14
pack use past before	-8			27
pack use past behind				19
pack use present behind	-29		6	19
pack verb be before	6	-23	8
pack verb be behind	-23			29
pack verb blow behind	-29			21
pack verb bring behind	-13	15
pack verb burn behind				11
pack verb buy behind	-23				24
pack verb do behind	-32	16	-17	13
pack verb fill behind				6
pack verb finish behind	-14	-26	-23	32
pack verb get behind				-9
pack verb go behind	-8			19
pack verb grab behind	-25	34
pack verb hang behind	-21	-10	5	13
pack verb have before	9	6	-18	-5
pack verb have behind	-15		37
pack verb leave before			32
pack verb leave behind	-5	-18	32	-23
pack verb make behind		-23	-12	16
pack verb need behind		6
pack verb null before	-8	25	-42	7
pack verb null behind	-23	10	19
pack verb null no	-34
pack verb order behind	11
pack verb pick behind	-10			-8	25
pack verb put behind	-8	13		-4
pack verb run behind		-6		14
pack verb take behind	-48		9	14		-11
pack verb throw behind	-29		-10	-18	22
pack verb use before	15	-7	-15
pack verb use behind				20
pack verb want behind	-20	35
pack whole clause	-51		4
pack work imperative behind	-7	5
pack work modal behind		6	5	-17
pack work owed behind	-28	23		-13	13
pack work past before		-36		22
pack work past behind	-12			53
pack work present before	-25	21		-7
pack work present behind	-20	-12		39
plural area		-16	-13	11
plural count	-26			6
plural length			-13	6
plural one	-14	24
plural volume	-36	13	5
plural weight	-15	27
pointer after need here	25
pointer after none sentence		-6	12	-5
pointer beside nothing	34
pointer cue have	19
pointer cue need		-6	7
pointer cue used	4		-5	5
pointer flawed	7		-6	-11		11
pointer name flawed	-11	-7	5			12
pointer named before material		-10		15
pointer named before part	12	-6		-17
pointer named before word	18
pointer other past behind	-24		12			18
pointer right #		-13		8
pointer says imperative behind	25
pointer says past behind	-27	-6		13		10
pointing	-26			18
right # N	22
right &	-24	19		4
right '	12
right (	-14			-24	9	10
right ( Q	25	-29	8	-20
right )	-13	15	-6	-16		18
right +	-9
right + G	30	-5		-17
right + Q	-25	7		26
right + a	-22	22
right -	19
right /	-18			12
right / G	-17	32	-20	-33
right =	25			-6
right @		7
right @ Q	-28	17	-11	11
right G	-8			14
right Q #	36
right Q G		-14		14
right Q Q	40	-7		-14
right Q all	20			-14
right Q and	36	-17	-9	-14
right Q is			6
right Q off	8
right Q on	8
right Q short	11
right T Q					12
right T and	7
right T before	7
right T if	13
right T to	-18	21
right a	5
right a G	-5	9
right a Q	-25	32
right about	11
right about the	15
right above	21
right above the	23
right across	27
right across #	15
right across the	11
right after	8
right again	5
right ain't	10
right all Q	17
right all around	29			-7
right all the	24
right along		-4		6
right along the		-6		8
right already			17	-19
right already #			7
right and #		11
right and G		24		-20
right and Q	-21	30
right and a	-38	14		16
right and it	17	-11
right and no	10	-18	11	-8
right another	16
right are Q	31
right are all	39
right are at	25
right are cut	9	-8	6	-15
right are hang	-19			24
right are in	-25	-28	33
right are on				15
right are set		-17		13
right are shot	22	-5
right are up	-12	-25	-20	34
right aren't		9
right around the		-8		19
right arrive			8
right as	12
right at N	6
right at Q		12		-15
right at all	15
right at the	32
right back		10		-11
right back on	-7	16		-9
right bag	23
right be #	16
right be Q	32
right be hang	20
right be just	12
right be leak	-14	21
right be loose	18
right be pack	18
right be weep	5
right before i	-7	19		-9
right before that	15
right before the	-9	9
right behind G	12
right behind it	16
right behind the	12			-5
right below	16			-12
right bend	19
right bend #	23
right between	18
right between the	15
right bolt	17
right both	21
right bow	14
right break	11
right break #			11
right bring	30	-7
right burn	9
right buzz	5
right by	8
right by G	31	-21
right by T		9
right by the	26
right call	9
right call for	9
right can			6
right can go	12
right can't	10
right caulk	7
right caulk #	9
right center	7
right change	-6			15
right chip	21
right clean	8
right come #	25
right come Q	-25	-8	23	10
right come T	21
right come back	31
right come in	20
right come on	17
right come out	27
right come up	32
right come with		-6	24	-16
right complete	-8	15
right cover	20
right crook	18			-5
right crush	7
right cut	-6	-9		11
right cut #		-17	-9	16
right dead	21
right dead #	20
right deliver			16	-11
right didn't	20
right dig	7
right do #	7
right do not	21
right doesn't	14	-8
right don't let				10
right down from	15
right down the		6
right drill	7
right drip	7
right drip #	7
right dry	23
right dry #	13
right dump	7
right each	-17	-29	-7	24	14
right each #	-5	-5	-6	14
right eat	14
right every	24
right extra	-25	-4	12	13
right feel	8
right fill	12
right finally	13
right fine	10
right finish	6
right finish #		-14	-13	13
right fit	-6			24
right fit #	-29			41
right fix	-12	-5		23
right fix #	-26	-11	-9	31
right flash	7
right float	8			-19
right for G	-27	29	-10
right for Q	43
right for T	15
right for it		19		-13
right for that	-25	22	13	-18
right for the	-8		7
right get Q	32	-7		-20
right get a	34
right get its	9
right get no	-14	18
right give				5
right glue	-18	-5		30
right glue #				11
right go #		-13		13
right go Q	28			-16
right go back	20
right go down	11
right go in	-5			20
right go on	-12			27
right go through	33			-20
right go up	9
right gonna				-5
right good	-16		21	-11
right good #	-18	-12	23	-12
right grout	7
right grout #	7
right hang				14
right hang #				7
right hang Q	13
right hang on	24			-12
right has	22
right has Q	11
right has a	21
right has no	24			-5
right hasn't	-11	15
right have #	19
right have Q	8		-4
right have be	12
right have the	30	-14	-18
right have to						18
right head		15
right her	5
right here	-6	-9	29
right here #	-23	-5	33	-7
right him	12
right hit	8
right hum #		6
right i			13
right if you	13
right in #	-12	-6		70
right in Q	46	-12		-15
right in T	6	13		-26
right in a	5
right in all	13
right in at	22			-10
right in it		-16		24
right in living room	19
right in my	-20	-14	34	-24
right in that	21
right in the			11
right in the kids	29		-7	-19
right in there	6		-11	5
right inside	-9		14
right inside #	11
right into		-15	-17	17
right is #	13
right is N	11
right is Q	17
right is T	18
right is all	21
right is at		-26	18	-12
right is bend	10
right is break	38	-5	-17	-18
right is crack	23
right is do	27
right is down				6
right is fine	20
right is finish			-9	12
right is glue	24
right is go	-15	-13	-6	33
right is gonna	-12	18	-9
right is good	23		-5
right is hang	26
right is in			5
right is leak	12
right is miss	7
right is not	5
right is off	10
right is on				4
right is only	19
right is out	22
right is run	19
right is set	7
right is short	22
right is split	22
right is the	24
right is to	16
right is up				12
right is wet	4
right isn't	9
right it	7
right it #	11
right it T	12
right it back	10
right it on	19
right it up	10
right it's	12
right just	36
right keep	4
right land	19
right leak	14
right leak #	18
right leaning		-17	17	-17
right leave			35
right leave #	-6		43
right leave from	8
right leave in			22
right leave of	26		-17
right leave on	16			-14
right leave over			19	-5
right lift	5
right like	8
right like a	7
right loose	-7	-13	22	-21
right lose	14
right make		4
right me	17
right me Q	18
right measure	18
right measure Q	11
right miss		6
right miss #		13
right miss Q	21
right more		12
right more #	-42	48
right mount				6
right mount #	-10	-8		20
right move	10
right my	33	-14
right nail	11
right near	9
right near the	19
right need #		23	-10	-10
right need Q	24	-22
right need T	17
right need to	13
right never	-4			8
right next	-9	20
right next #	-8	21
right next to		9
right no	7
right no #	-14	6	13	-19
right no G	-39	31	-16
right not Q	10
right not before	7
right not the	8
right nothing	20
right now #	11	-13
right now the	11
right of Q	-12	6
right of it	20			-17
right of that		21
right of those		22	-23	-20
right off	22
right off #	11
right off T	16
right on #		-8		27
right on G	-8			11
right on N	12
right on Q	13		-9
right on a	18
right on every	27			-21
right on hand		-30	33	-24
right on in	30
right on me	-30	34	-14	-13
right on my	22
right on order	-28				48
right on site	-14	-26	36	-36
right on that	-5		11
right on the	8
right on top	10
right once	5
right only	11
right only Q	9
right open #		-12	14
right or	35	-12
right or G	5
right order	11	-5		-13	8
right out #	45
right out T	-13	22
right out back	12
right out of	-17	-35		36
right out of plumb	10
right over #	-18	-35	20	-33		23
right over Q	12
right over it				11
right over to	24			-19
right pack		9		-6
right paint	15
right pass	10
right peel	-8	18
right pin	7
right pipe	17			-11
right pitch	4
right plug	9
right prime	-6	15
right pull	20
right pull #	14		-14
right pull Q	11
right pull out	11
right rack				5
right read	10
right read Q	9
right replace	-13			21
right replace #	42			-34
right require		6	-6	-16
right require #		6	-6	-16
right return	7
right right	23
right right down	6
right right where	12
right rip	6
right rock	6
right rock #	6
right roll	-17		23	-12
right roll #	-17		23	-12
right rot	-5
right rough	8
right run #	8		5	-14
right run Q	7
right rust	16
right sag	8
right sand	-5	-17	20	-12
right say Q	19
right scratch						17
right screw	14
right seal			15	-10
right seize	17
right seize #	17			-6
right send	25
right short		18		-11
right short #		21	-14	-35
right short Q	23	-13
right short by	-4	12
right shot	-12	19
right shot #	-12	19
right should	-15	22		-4
right show up						11
right since				13
right since the	-16			21
right sit	11
right sit Q	4
right sit in			16
right sit on	13	-17	-4	-6
right snap	11
right so				4
right so that				5
right somebody	15
right sound	8
right split	25			-7
right spray	18
right squeak	8
right stain	-17	4	-5	13
right start	18
right stay	12
right stick #	11
right still			36	-12
right still has			4
right still in	-24	-23	38	-16
right still on	-26	-6	37	-33
right still to	39	-6	-21
right stretch				6
right stuff	-7	7
right swap				18
right swap #	-18			27
right sweat	-5	15
right take		-12				16
right take Q	21			-6
right take the	10
right tape	-18	-10	8	15
right tear			5
right tear #	21
right tell	-6			13
right test	9
right test #	11
right than	17
right than the	14
right the N	28			-10
right the Q	-40	31		-5	17
right the leave	11		-23	4
right the old		5
right the size	8
right them	5
right then				12
right there	-9	19		-11	7
right there #		6
right they	-5		24
right those	9
right through	6
right through #	20
right through it	13
right til	12
right til T	7
right till the	17
right to G	32			-11
right to Q	45
right to be	-9	26		-15
right to corner	11
right to go	27	-12		-35
right to the						21
right to wall	11
right too	-6
right top	13
right top #	9
right toward	7
right toward the	7
right turn	-7		27	-8
right under	8
right under #		-6		13
right under G	11
right under it	19
right under there	19
right underneath	12
right unopen	-23	-9	34	-19
right until T	23
right until the	20
right up				6
right up #		-23		22
right up Q	14
right up T	15
right up and	11
right up on	4	-15	-6	5
right up the		-9		14
right up there	31	-22		-11
right up to	12
right use				17
right use #	-19			37
right want #		28	-35	-30
right want a	16
right want the	10
right we	19
right were	13
right what	4
right when i	-6	7	6	-4
right when you	15
right where it			10
right which i	-9		14
right which is	21
right while					7
right wire	6
right wire #	11
right with	6
right with #	26	-14		-8
right with G	28			-11
right with Q	38	-8	-20
right with a		7
right with me		16	-20
right with no	13
right without	17
right wobble	10
right won't	5
right wont	6
right would		15	-5	-8
right wouldn't	21
right you	18
right1 &	-24	19		4
right1 '	12
right1 (	-14			-24	9	10
right1 )	-13	15	-6	-16		18
right1 +	-9
right1 -	19
right1 /	-18			12
right1 =	25			-6
right1 @		7
right1 G	-8			14
right1 a	5
right1 about	11
right1 above	21
right1 across	27
right1 after	8
right1 again	5
right1 ain't	10
right1 along		-4		6
right1 already			17	-19
right1 another	16
right1 aren't		9
right1 arrive			8
right1 as	12
right1 back		10		-11
right1 bag	23
right1 below	16			-12
right1 bend	19
right1 between	18
right1 bolt	17
right1 both	21
right1 bow	14
right1 break	11
right1 bring	30	-7
right1 burn	9
right1 buzz	5
right1 by	8
right1 call	9
right1 can			6
right1 can't	10
right1 caulk	7
right1 center	7
right1 change	-6			15
right1 chip	21
right1 clean	8
right1 complete	-8	15
right1 cover	20
right1 crook	18			-5
right1 crush	7
right1 cut	-6	-9		11
right1 dead	21
right1 deliver			16	-11
right1 didn't	20
right1 dig	7
right1 doesn't	14	-8
right1 drill	7
right1 drip	7
right1 dry	23
right1 dump	7
right1 each	-17	-29	-7	24	14
right1 eat	14
right1 every	24
right1 extra	-25	-4	12	13
right1 feel	8
right1 fill	12
right1 finally	13
right1 fine	10
right1 finish	6
right1 fit	-6			24
right1 fix	-12	-5		23
right1 flash	7
right1 float	8			-19
right1 give				5
right1 glue	-18	-5		30
right1 gonna				-5
right1 good	-16		21	-11
right1 grout	7
right1 hang				14
right1 has	22
right1 hasn't	-11	15
right1 head		15
right1 her	5
right1 here	-6	-9	29
right1 him	12
right1 hit	8
right1 i			13
right1 inside	-9		14
right1 into		-15	-17	17
right1 isn't	9
right1 it	7
right1 it's	12
right1 just	36
right1 keep	4
right1 land	19
right1 leak	14
right1 leaning		-17	17	-17
right1 leave			35
right1 lift	5
right1 like	8
right1 loose	-7	-13	22	-21
right1 lose	14
right1 make		4
right1 mark.	-14
right1 me	17
right1 measure	18
right1 miss		6
right1 more		12
right1 mount				6
right1 move	10
right1 my	33	-14
right1 nail	11
right1 near	9
right1 never	-4			8
right1 next	-9	20
right1 no	7
right1 nothing	20
right1 off	22
right1 once	5
right1 only	11
right1 or	35	-12
right1 order	11	-5		-13	8
right1 out of plumb	10
right1 pack		9		-6
right1 paint	15
right1 pass	10
right1 peel	-8	18
right1 pin	7
right1 pipe	17			-11
right1 pitch	4
right1 plug	9
right1 prime	-6	15
right1 pull	20
right1 rack				5
right1 read	10
right1 replace	-13			21
right1 require		6	-6	-16
right1 return	7
right1 right	23
right1 rip	6
right1 rock	6
right1 roll	-17		23	-12
right1 rot	-5
right1 rough	8
right1 rust	16
right1 sag	8
right1 sand	-5	-17	20	-12
right1 scratch						17
right1 screw	14
right1 seal			15	-10
right1 seize	17
right1 send	25
right1 short		18		-11
right1 shot	-12	19
right1 should	-15	22		-4
right1 since				13
right1 sit	11
right1 snap	11
right1 so				4
right1 somebody	15
right1 sound	8
right1 split	25			-7
right1 spray	18
right1 squeak	8
right1 stain	-17	4	-5	13
right1 start	18
right1 stay	12
right1 still			36	-12
right1 stretch				6
right1 stuff	-7	7
right1 swap				18
right1 sweat	-5	15
right1 t area.	30
right1 t defect.	18
right1 t material.	-10	21		-18
right1 take		-12				16
right1 tape	-18	-10	8	15
right1 tear			5
right1 tell	-6			13
right1 test	9
right1 than	17
right1 them	5
right1 then				12
right1 there	-9	19		-11	7
right1 they	-5		24
right1 those	9
right1 through	6
right1 til	12
right1 too	-6
right1 top	13
right1 toward	7
right1 turn	-7		27	-8
right1 under	8
right1 underneath	12
right1 unopen	-23	-9	34	-19
right1 up				6
right1 use				17
right1 v buy.		-29		14
right1 v return.	15
right1 v see.	9
right1 v use.				17
right1 we	19
right1 were	13
right1 what	4
right1 while					7
right1 wire	6
right1 with	6
right1 without	17
right1 wobble	10
right1 won't	5
right1 wont	6
right1 would		15	-5	-8
right1 wouldn't	21
right1 you	18
right2 (					6
right2 -	19
right2 @	-8	-6		21
right2 about	22
right2 above	32			-8
right2 after	14
right2 again	17
right2 all	29
right2 along	-14	21		-11
right2 already	26				-23
right2 an	17
right2 and	12
right2 anything		15		-14
right2 around	35
right2 as	19
right2 back	28
right2 bad				14
right2 balance	-11	-16	20	-9
right2 be		23
right2 before	21
right2 behind	19
right2 bend	11			-8		4
right2 black	6
right2 book	24	-11
right2 bore	-4		18	-8
right2 both	12
right2 box	15
right2 break		-8	-17	16
right2 brown	-16	22
right2 burn				8
right2 buy	-27	17		-27	14
right2 by				-10
right2 cap		11
right2 caulk	16
right2 ceiling		9		-13
right2 center	5
right2 chip	-17			-5		24
right2 clean	18
right2 clear	11
right2 clog	14
right2 close		-8	18	-17
right2 cold	23
right2 corner	11
right2 cover		16		-9
right2 crack	-11		15
right2 crook	24			-9
right2 cut				-5
right2 dead	9
right2 deliver	-42	14	-5		19	19
right2 dig	11
right2 do		8		-14
right2 drill	23
right2 drip	27	-7
right2 drop	12
right2 dry	38			-11
right2 each	14	-7
right2 eat	19			-5
right2 empty	10
right2 end	-8	-13		16
right2 every	32			-17
right2 except	19
right2 extra	-25	6	22	-32
right2 fill	15
right2 fit				12
right2 flash	9
right2 flat	15
right2 floor			12	-4
right2 flush	4
right2 foam	7
right2 for	-6	15
right2 from	24	-23		-23
right2 front	-20	-17		32
right2 gonna	-9	17	-5
right2 good			11	-6
right2 half	-6	-22		17
right2 hall	26
right2 hand		-28	32	-21
right2 hang		-18		18
right2 hard	22
right2 have	-15		22
right2 he	19	-9
right2 her	4		9	-35
right2 here	20		-11
right2 high	17	-7
right2 him	-22					24
right2 hinge			9
right2 his			11
right2 hold	9
right2 hole	27			-25
right2 hollow	15
right2 hot	19
right2 i			7	-4
right2 i'm	16
right2 if	8
right2 in			17
right2 inside	11
right2 install	-22	-5		27
right2 into		-4	-7	9
right2 it's	5
right2 its	12
right2 just	22
right2 keep	18
right2 kitchen	-5	11
right2 last				6
right2 lay	-18	17
right2 leak		6		-9
right2 leaning	-14		20
right2 leave	-16					14
right2 level	21
right2 lift				6
right2 like	16
right2 living room	-7			14
right2 long	25			-10
right2 look	7
right2 lose	9
right2 low	9
right2 lower	22
right2 mark	5
right2 maybe	16
right2 me		21
right2 mine	-22	16	13	-6
right2 miss	16			-10
right2 mount	-18			28
right2 move	15
right2 mrs	6
right2 mud	33	-24		-14
right2 my	-11	-4	42	-22
right2 nail	4
right2 need	-24	40		-7
right2 never	6
right2 new	32			-10
right2 night	10
right2 no	29
right2 noon	26	-11
right2 notch	17
right2 nothing	16
right2 now			-5	27
right2 of				7
right2 off	37
right2 oil	15
right2 old	6
right2 ones	-21		21	-8
right2 only	39
right2 open				7
right2 order	-28				46
right2 other	-6	-28	29	-29	5
right2 out				15
right2 owner	20
right2 pack					9
right2 paint	16			-11
right2 painted shut	11
right2 pass	12	-4
right2 piece	-17			29
right2 pipe	21
right2 plane	16
right2 plug	19	-9
right2 plumb	26			-11
right2 pour	15
right2 pull	23
right2 put	-23			26
right2 reach	15
right2 read	25
right2 replace	-13	-18		21
right2 rip	18
right2 rot	22			-11
right2 run	38			-20
right2 sand	31	-5
right2 screw	8
right2 seal	11
right2 second	11
right2 send		-9	13
right2 set	8
right2 she	26	-11
right2 short	28
right2 shot	17
right2 side				10
right2 site	-14	-26	36	-36
right2 size	9
right2 slow	5
right2 snap	10
right2 so	19
right2 soft	18			-7
right2 solid	16
right2 something	12
right2 sorry	28	-23	-15	-7
right2 split	-29	14		15
right2 spray	25			-11
right2 stand	13
right2 stick	14
right2 still	-19	5	-15	30
right2 stop	-21		22
right2 strip	19
right2 supposed	-26			-13	24
right2 t defect.	5
right2 t fixture.	40
right2 t surface.	28
right2 t tool.		-14
right2 t work.	19	-13
right2 take	24	-14
right2 tear	18
right2 tell	-18			22
right2 the kids	29		-7	-19
right2 their	5	-20	14
right2 them	9
right2 then	33
right2 there	12	-13
right2 this	33			-14
right2 those		5	-7	-6
right2 though	5
right2 through	9
right2 tight	14
right2 tile	-11	-21	31	-17
right2 till	13
right2 to	18
right2 too		16
right2 too short	26	-12		-13
right2 top	19
right2 touch	26
right2 truck	14	-29		-15
right2 turn	25			-8
right2 twist	17
right2 v buy.	-32			-24	45
right2 v have.	-15		22
right2 v measure.	5
right2 v need.	-24	40
right2 v say.	-5			15
right2 v see.	4
right2 wait	18	-8	-8	-15
right2 want				9
right2 water	15
right2 we	23
right2 weep	10
right2 wet	18
right2 what	15
right2 when	-15			25
right2 where	18			-4
right2 white	-21	21
right2 wire	6
right2 without	25		-5
right2 you	29
right2 your	12
right3 -	8
right3 T	16
right3 about	25
right3 above	25	-9		-18
right3 across	27
right3 after	20
right3 again	20
right3 air	25	-8		-16
right3 all	18
right3 already	6	-24			18
right3 and		18
right3 anything	-8	16		-5
right3 are	11	-4
right3 around	-28		-8	33
right3 as	12
right3 at	12
right3 attic	7
right3 backwards	15
right3 bad	16
right3 bag	-24	18		-24	12
right3 bar	-10		-5	19
right3 basement	-4		18	-10
right3 bed	9
right3 bedroom	24
right3 before				-9
right3 behind	12
right3 belly	15
right3 below	17
right3 bend	12	-19		-5
right3 big	23
right3 bolt		-16		15
right3 book	-10	15
right3 both	23
right3 bottom		-14		7
right3 box	-21		34
right3 bracket	-7	6	7
right3 bring		11
right3 by	8
right3 can	15
right3 ceiling	28
right3 cellar			7
right3 chip						17
right3 clamp	-22	23
right3 clean	-21	19				17
right3 closet	28			-15
right3 coat	4			-7
right3 cold				11
right3 corner	15
right3 counter	-7	-20				20
right3 cover	13
right3 cut	20
right3 deep	24
right3 den	23
right3 do		7
right3 down	17
right3 dry		-19	4	8
right3 drywall	14
right3 em	27
right3 enough	27	-24
right3 every	17
right3 everywhere	21
right3 except	14
right3 fine	18
right3 finish	29			-12
right3 fireplace	11
right3 first	-20	-9	24	-11
right3 flat	33
right3 floor	28
right3 foot	17
right3 for	7			-9
right3 frame		12		-11
right3 front	24
right3 garage	-5		11
right3 gas				10
right3 get						7
right3 glue	21			-12
right3 good	20	-17
right3 grind			12
right3 guy	8			-11
right3 half	-18		24
right3 hall	20	-5
right3 hall closet	28			-11
right3 hallway	27			-5
right3 hand	-14	6		13
right3 hang	21			-8
right3 has		8	-5
right3 have	-20	9	16	-16
right3 he		10
right3 her	-15		10
right3 high	7
right3 his	15
right3 hole	15
right3 holes				9
right3 house	12
right3 i	10
right3 if		11
right3 inside	23			-12
right3 into	12
right3 island	-16		7
right3 it	22
right3 it's	-16			22
right3 its	20
right3 joint	-18		20
right3 just	18
right3 kitchen	42
right3 land	9
right3 last	27
right3 laundry		7
right3 leave			7
right3 lid	-10	19
right3 lift	7
right3 like	7
right3 list		23		-22
right3 little	-24		24
right3 loose	11	-11	-22	10
right3 low	10
right3 make	18	-15
right3 man		-19			20
right3 match	17
right3 me				11
right3 my		-7
right3 nail	9
right3 near	6
right3 need	5
right3 never	12
right3 new			-13
right3 not		14
right3 nothing				5
right3 now		-5
right3 nursery	10
right3 off	23
right3 office	-7		-8	15
right3 old	10
right3 ones		21		-4
right3 only	34
right3 open	29
right3 opened up	-5	17		-11
right3 or	9
right3 other	38	-6		-8
right3 out of plumb	8
right3 outside	34	-11
right3 over	37			-20
right3 own	25	-22
right3 owner	24	-5
right3 paint			10
right3 painter	16
right3 pantry		-9	19	-12
right3 paper	19			-10
right3 pipe	16
right3 porch	37		-5	-21
right3 powder room	-24		22
right3 proud	20
right3 pull	19			-11
right3 right				10
right3 roof	19
right3 run				8
right3 rust	5
right3 salon	-6			17
right3 same	18	-16
right3 say		7		-7
right3 second coat	6
right3 see	-11	16
right3 set	13
right3 shop	-10		16
right3 short	-18	26
right3 side	37
right3 so	10
right3 split	24
right3 stairs				-5
right3 stand	-15			20
right3 steps	22			-12
right3 still	20
right3 store	-17	-19	29	-31
right3 street	21
right3 study	-12		21	-14
right3 take			10	-8
right3 tall		-5		10
right3 tap	14
right3 than	15
right3 then	14
right3 they	21	-13	-5	-5
right3 those	-12		12
right3 though	-21	15		9
right3 through	7
right3 tile	21
right3 top	-14			8
right3 truck	-26		16	5
right3 turn	18
right3 under	21
right3 until	6
right3 up	35
right3 van	-26	-20	52	-45
right3 walk	18
right3 wall	36			-8
right3 walls	4
right3 want	-32	-12	34
right3 water	19			-7
right3 way					6
right3 we	14
right3 when		5
right3 where	30	-8
right3 which	6	-28	14	-20
right3 white	16			-18
right3 whole				13
right3 wide	20
right3 wire	-5	17	-5	-16
right3 wrap	-11	18	-7
right3 wrong	25	-16	-8	-6
right3 x				11
right3 yet	25
right3 you				7
says copula before not	12
says imperative before	14
says modal behind		5
says owed before not		5
says past before not	6
sized	-15
sold so true	-43
sort area	-5		-7	17
sort pack	-19
sort pointer		-5
sort volume	-31
sort weight	-9			5
then ain't	18
then ain't is	18
then arrive pp			7
then ask	7
then bag	-5	20		-22
then bag b	-8	22		-25
then balance	27	-11
then be b					11
then bend	32			-5
then bend pp	19
then bind	14
then bind s	6
then blow	11
then blow s	9
then bolt	28
then bolt pp	28
then book b	12
then book pp		14		-10
then bow	30	-12
then bow pp	26	-12		-7
then box	-8		20
then box b	-9		21
then break	11
then break p	12
then bring	-20	19
then bring b	-30	25	5
then bring i	7
then burn	5
then buy		7	-20		7
then buy b	-13	9		-19	31
then buy pp	-23	-32	-27	7	29
then buzz	15
then call	15
then call b	15
then call s	5
then can't	9
then can't will	9
then caulk	7
then caulk pp	7
then center	7
then center pp	7
then change	-6			15
then check	19
then check pp	17
then check s	4
then chew	16
then chew pp	16
then chip	23
then clean	14
then clean b	10
then clean pp	9
then clear	4
then coat	-9			16
then come bp	31	-9
then come p						17
then come s	26
then complete		11
then complete b		12
then cover		5
then cover b		7
then cover pp	9
then cover s		7
then crack b	-5	-6	17	-8
then crook	18			-5
then crook pp	18			-5
then crush	7
then crush pp	7
then cure	12
then curl	15
then cut			5
then cut bpp	-5	-6	8
then deliver			16	-11
then deliver pp			19	-12
then didn't	-6	-18			22
then didn't will	-6	-18			22
then die	19
then dig	9
then dig pp	9
then do b	-15	27
then do p	5
then do s	21
then drill	10
then drill pp	10
then drip	17
then drip s	10
then drop	18
then drop pp	17	-4
then dry pp		-11	16	-5
then dump	7
then dump s	7
then eat	8
then eat p	9			-11
then feel	7
then feel s	5
then fill	10
then find	6
then finish pp			-6	8
then fit				22
then fit pp	-18			32
then fit s	23			-11
then fix	-10	-5		22
then fix pp	-14	-7	-4	24
then flash	7
then float	14			-16
then float b		5
then flush	13
then freeze	15
then freeze p	10
then get b	-14	28
then get i	-6	14
then get s	28
then give p				7
then glue	-15			27
then glue pp	-15			27
then go b	21			-21
then go i	17
then go p				37
then grout	7
then grout pp	7
then hang		-11		6
then hang b	31	-24		-13
then hang i	13
then hang pp				22
then hang s	24
then has	7
then has has	7
then hasn't		9
then hasn't has		9
then have b			16
then have pp	5
then head	-16	8		15
then head b	-19	9		16
then hit	8
then hit s	8
then hold				12
then hold b	-6		-16	19
then hold i				8
then hold pp	14
then i've	-8		17
then i've has	-8		17
then install	22
then isn't	13
then isn't is	13
then keep	24
then keep pp	26		-6
then kick	7
then label	-16	-6	23	-14
then land	30
then land b	22		-13
then land pp	19			-5
then leak	32
then leak b	11
then leave			26
then leave pp			25
then leave s				8
then let	21
then level	26			-9
then lift	5
then lift i	7
then like	23
then like b	23
then look	29
then look b	10
then look s	17
then lose	13
then lose pp	14
then make	6
then make b	14
then make pp		9
then match		22		-6
then match b		10
then measure	17
then measure b				14
then measure bp	31	-9
then measure p						17
then measure s	5
then miss		9		-4
then miss i		17		-5
then miss s	13
then mount				6
then mount pp		-4		10
then move		9
then move i	19
then move p				37
then move pp			23
then nail	8
then nail pp	11
then need b	8
then need pp	-13	42		-28
then need s	18
then open		-6
then open b	33		-4
then open pp	-24	-23	22	11
then order	-21	-6		-11	54
then order b	-27				51
then other pp	4
then other s	18
then own	24	-22
then own b	24	-22
then pack		13
then pack b	-12	17
then paint	12
then paint pp	12
then patch	20	-5
then peel	-7	20
then peel i	-16	21
then pick	9
then pick s	8
then pin	7
then pin b	7
then pipe	16			-9
then pipe pp	17			-11
then pitch	4
then place	10
then place b	10
then plug	9
then plug pp	9
then plumb	31	-10	-4	-24
then pop	14
then prime	-4	15
then prime pp	-6	17
then pull	17
then pull i		11		-13
then pull pp	23
then put	13
then put bpp	13
then rate	9			-4
then rate pp	9			-4
then rattle	5
then rattle s	5
then read	15
then read i	11
then read s	12
then replace	-8			18
then replace pp	-8			18
then require			-10	-14
then require pp			-10	-14
then return	18
then return s	12
then rip	10
then rip pp	10
then rock	6
then rock pp	6
then roll	-22	-17	17	20
then rough	8
then rough pp	8
then run bp	23			-16
then run i			11
then run s		6
then rust	17
then sag	9
then sag i	4
then sag s	5
then sand		-23	16	-6
then sand pp		-24	17	-9
then say b	28
then say pp	-4			18
then scrape	6
then scratch	18	-20		-13		7
then scratch b	29	-22	-4	-9
then screw	16
then screw pp	16
then scribe	11
then seal	-12	-5	7	6
then seal pp			14	-11
then see b	26
then see pp	30			-5
then see s		13
then seize	17
then seize pp	17
then send pp			10
then set	13
then set bpp	25
then should		14
then should will		14
then show			7
then show b	27
then show pp	-22		20			15
then show s	9
then sit i		-5	9
then size	17
then size b	17
then smell	17
then sound	18
then sound b	20			-8
then split	27
then split bpp	27
then spray	16
then spray pp	14
then square					18
then square b					18
then squeak	17
then squeak s	12
then stain	-15			13
then stain pp	-15			13
then stand	-7			20
then stand pp	9
then stand s				8
then start	17
then stay	13
then stay b	10
then stick pp				4
then stick s	7
then stretch				6
then stretch pp				9
then strip pp	11
then stuff	-6	6
then stuff b	-15	10		7
then swap				14
then swap b	25
then swap pp				23
then sweat		11
then take						7
then take b	22	-22
then take p	8	-8				13
then tape	-18	-10	8	15
then tape pp	-18	-10	8	15
then tear			5
then tear p			6
then tell	-21	-5		28
then tell pp	-21	-5		28
then test	7
then test b	16
then trip pp	5
then turn			20
then turn b	-10		19
then turn pp			4
then unopen	-23	-9	34	-19
then unopen pp	-23	-9	34	-19
then use				19
then use pp				30
then wait	35	-30
then wait b	35	-33
then walk	17
then walk b	20
then want b	22
then want pp	-17	16	8	-31
then weep	11
then weep i	9
then weep s	5
then were	10
then were is	10
then wire	6
then wire pp	6
then wobble	12
then won't	22
then won't will	22
then wont	9
then wont will	9
then work	15
then work bp	23			-16
then work bpp	8
then would		14		-6
then would will		14		-6
then wouldn't	4
then wouldn't will	4
then wrap	15
then wrap pp	11
unit bag	-41		16	13
unit bottle	11		6	-46
unit box	-45
unit bucket				-13
unit bundle	-23	-8	5		22
unit can	-43			37
unit carton		-26	37	-44	-12	-7
unit cartridge	-14	24	-7	-7
unit case	-21		23
unit coat	73	-46		-34
unit each	-45	23
unit from said	-44
unit from shared	-55	23	8	-24	19
unit gal	-27	20
unit kg	-16	-8	11	11
unit kit	-32	-7		18	10
unit lb		14
unit length	-34		13		12
unit m	-12		8
unit pack	-5	21	-9	-45	21
unit pail	-29		-13	26
unit pair		22	-23
unit pallet	-12		24	-31
unit qt	-65		44	-8
unit roll	-59		4	24
unit row	24	-26
unit set			-37	18
unit sheet	-17			20
unit sleeve	-24	9	8
unit sq ft		9	-14
unit sq m				5
unit square	-31			28
unit stick	-69	29				7
unit tin	-42	9		12
unit ton	-5	-19	-9	18
unit tub	-33	10
unit tube	-47	19
unit yd	-39	45	-7	-22
use buy before	-26	7	-21		18
use buy behind		7			8
use buy imperative behind		25
use buy modal behind	-12	23
use buy owed before	-18	25	-9	-9
use buy owed behind	12
use buy past before	-26	-26	-19	11	23
use buy past behind	-23	-40	-5	-28	61
use buy present behind	-30		-11	-23	31
use have imperative behind	8
use have past behind	20		-11
use measure modal before	6
use measure modal behind	-33	46		-10
use measure owed before	6
use measure owed behind	9	-9
use measure past before			6
use measure present behind	9
use move imperative behind	4
use move modal before	22
use move modal behind	24
use move owed before			21
use move owed behind				-12	16
use move past before			7
use move present before	14
use move present behind	10
use need behind		14
use need modal before	28	-12
use need owed before	11
use need owed behind		11
use need past before	-15	31
use need past behind	27	-6
use need present behind		19
use null imperative behind	7
use null modal before		5
use null modal behind		16
use null owed before					13
use null owed behind			7
use null present behind	21
use other imperative behind		30
use other owed before	-17	22
use other present before	11
use return before	21
use return behind	-31	-27		9		28
use return past behind	-38	-22	-23	11		32
use say before	6
use say modal before	19
use say modal behind	12
use say owed behind	8
use say past before	33
use say past behind	24
use see modal behind				9
use see owed before	17
use see owed behind	13
use see past before	7
use see past behind	7
use see present before	5
use see present behind	6
use use before				27
use use behind				20
use use imperative behind	-17	-6		24
use use modal behind		17		-21
use use past before	-8			31
use use past behind				20
use use present behind	-14	-9		22
use work imperative before	14
use work owed before	17
verb add behind	-4			9
verb add imperative	17			-19
verb add past	-35	-17	-10	41
verb adjust before	14
verb adjust behind	22	-5
verb adjust past	17
verb arrive before			8
verb arrive behind	-7	11
verb arrive past			8	-6
verb ask behind	8
verb ask imperative	28
verb ask past	16
verb ask present		10
verb balance behind	-17		16
verb be past	28
verb bed past		-8	-7	9
verb bend before	23
verb bend behind	13
verb bend imperative	14
verb bend past	21
verb bind before	5
verb bind present	7
verb blow before	7
verb blow present	-5	15
verb bolt behind	-12	-13		23
verb bolt past	-4	-9		18
verb borrow past	-7	17		-7
verb bow before	28	-15	-5	-11
verb box before	-7	-10	-4	21
verb box behind	-14	11		7
verb box present	-14	-8		28
verb break behind		8
verb break past	15	-10
verb bring before		-9	16
verb bring behind	-5	25
verb bring imperative	-5	28
verb bring modal		16
verb bring owed	30	-19
verb bring past	-16	-37	14	-30		31
verb bring present	-24	30
verb bubble past	18
verb build behind	5	-13
verb build past		-7		5
verb burn before	18			-7
verb burn behind				26
verb burn owed	14
verb burn past				21
verb buy before	-21	11	-25		14
verb buy behind					7
verb buy imperative		31
verb buy owed		11	-7
verb buy past	-8	-27	-5	-10	27	8
verb buzz before	6
verb call past	-8	17
verb call present	22
verb can before		7	-26
verb can behind	5	-8
verb can modal			-15
verb cap behind	29			-11
verb cap past	30			-8
verb catch before	5
verb catch behind	11
verb catch present	11
verb caulk before	5
verb caulk past		4
verb center past	7
verb change before	-6			15
verb change behind	-18			24
verb change imperative	20			-17
verb change owed	-15	22		-12
verb change past	-26	-8		37
verb change present		-10		19
verb chase imperative	6
verb check imperative	9
verb check present	11
verb chip behind	13
verb chip past	25
verb clean behind	20
verb clean past	18
verb clean present	16
verb clear behind	-4			17
verb clear present	10
verb close behind	6
verb close past	-6			14
verb close present	31
verb come before	7
verb come behind				-9	29
verb come imperative	-7				19
verb come modal	-12	24
verb come owed	24
verb come past		-12			13
verb come present				-9	18
verb consum past	-21	-26	-29	37
verb could behind	22	-6
verb could modal	22	-6
verb count behind			15	-17
verb count past	-11	-26	29	-19
verb count present	6		-10
verb cover before	26	-10		-8
verb cover behind	26
verb cover past	9
verb cover present	33	-18		-15
verb crack before	-8	7		4
verb crack behind	12
verb cup before	11
verb cut before	-6	12
verb cut imperative	8
verb cut modal		5
verb cut owed	19
verb cut present	10
verb deliver before			16	-11
verb deliver past			19	-12
verb dial past	27		-13	-8
verb dig behind	16
verb dig past	13
verb ding behind	17
verb ding past	28
verb do before				-13
verb do imperative		-14	13
verb do owed	11
verb do past				12
verb doesn't behind	25	-9
verb doesn't modal	25	-4
verb don't behind		10	-10
verb don't modal		6	-8
verb dont before	10
verb dont modal	10
verb drain before	8
verb draw behind	12		-7	-9
verb drill before	10
verb drill behind	14
verb drill modal	17
verb drill owed	10
verb drill past	4
verb drill present	8
verb drip before	13
verb drip behind	7
verb drip past	18
verb drip present	5
verb drive behind				9
verb drive past				5
verb dry before	-9		16
verb dry modal	26
verb dump before		9
verb ease behind	17
verb ease past	17
verb eat behind	-6			17
verb eat past	18		-5	-5
verb eat present	-12			17
verb end behind				5
verb end past				9
verb fail past	10
verb falta behind		13	-9	-13
verb falta owed		13	-9	-13
verb feel behind	16
verb feel modal	16
verb figure behind	11
verb figure imperative	-24	36
verb figure present	23	-10	-14	-10
verb fill past				9
verb find imperative		8
verb find past	16
verb finish before			-9	15
verb finish behind				12
verb finish imperative		-12	-18	16
verb finish modal		-18		11
verb finish past	12
verb finish present				13
verb fit before	-10			27
verb fit behind	-8			23
verb fit past	-43	-9		53
verb fit present	30			-7
verb fix before	-5	-5		20
verb fix behind				11
verb fix past	-11	-8	-8	29
verb float behind		-20	-8	17
verb flush behind	8	7		-15
verb flush imperative	19	-9	-5
verb foam behind				9
verb foam past				9
verb forget behind		12
verb forget present	7
verb frame before	14
verb frame behind	21
verb frame past	16
verb fre behind	-6	-14	21	-18
verb fre past	-4	-13	20	-17
verb freeze before	12
verb freeze past	12
verb get imperative		43
verb get modal	29
verb get owed		12
verb get past			15
verb give before	19
verb give behind						4
verb give imperative	10
verb give past					13
verb give present	-24					19
verb glue before				10
verb glue imperative	18
verb glue owed	19
verb glue past		-6		23
verb glue present	9
verb go imperative		11
verb go modal	23
verb go owed					10
verb go past				34
verb gonna behind	-36	6	33	-24
verb gonna owed	-30		31	-25
verb gotta behind	13
verb gotta owed	14
verb grab behind		4
verb grab imperative		5
verb grab modal	-22	32
verb grab past	-24	-26	-17	-17	34
verb grind behind	19
verb grout before	9
verb guess behind	-7	19
verb guess present	-18	25		-11
verb hang before				30
verb hang behind				19
verb hang imperative	-15		20	-16
verb hang modal	17
verb hang owed	24
verb hang past	-24			53
verb has behind	16
verb has owed	15
verb haul past	-16	21		-13
verb have imperative	8
verb have past	20		-11
verb hit imperative	15
verb hit past				7
verb hold before	7
verb hold behind	4
verb hold past	19
verb hold present	22
verb hook behind		-8		16
verb hook modal	8
verb hook past	-8	-7		19
verb i'll behind		7		-12
verb i'll modal		7		-12
verb install past	-15	-15	-11	28
verb keep behind	9
verb keep imperative	4		5
verb keep past			6
verb keep present	13
verb kill behind	13
verb kill owed	14
verb kill past	11
verb knock behind	19
verb knock past	18
verb know behind			15
verb land before					4
verb land behind	13
verb land owed	13
verb land past	22
verb land present	-5				16
verb latch before	5
verb latch modal	5
verb lay before		8
verb lay behind	-11			4
verb lay modal		10
verb lay past	-14			30
verb lay present			12	-20
verb leak before	19
verb leave before			25
verb leave imperative	19
verb leave modal	19			-6
verb leave past			33
verb leave present	15
verb let behind	20
verb let imperative	25
verb level behind	-9			17
verb lift behind	16
verb lift past	13
verb like behind		21
verb like modal	-16	29
verb like present	15
verb listen behind	14
verb lock modal	7
verb lose before	14
verb lose modal	7
verb lose past	9
verb make imperative	-5		8
verb make past	7
verb mark behind	11
verb mark past	13
verb match modal	18
verb measure before	19
verb measure past	10
verb mention past	12
verb miss before	19
verb miss behind	-8	26
verb miss imperative	22	-5
verb miss present		15
verb mix behind				16
verb mix past		-6	-5	18
verb mount before	-8	-8		19
verb mount past	-36	-10	-19	41
verb move before	13
verb move imperative	14
verb move modal		8
verb move owed	10
verb move past	28
verb move present	-6	-11	17
verb mud before	16
verb must behind	10
verb must owed	8
verb nail before	9
verb nail behind				11
verb nail past				6
verb need before		13
verb need behind		15
verb need owed		15
verb need past	-14	34	-7	-7
verb nick behind	11
verb nick past	14
verb notch behind	16
verb null imperative	7
verb null present	21
verb open before		-7	21	-20
verb open behind	23
verb open past		-22	16
verb open present	29
verb order before	-13	12		-12	14
verb order behind					9
verb order imperative		6
verb order modal	-8	14
verb order past	-10	-26		-18	49
verb order present	-15	11		-16	13
verb owe behind					13
verb owe present					14
verb pack imperative	-9	18		-12
verb pack past	4	-10
verb paint imperative	16
verb paint modal		-5	13
verb paint owed	14
verb paint present	7
verb pass before	19
verb pass past	26
verb pass present				10
verb patch imperative	-8	16
verb patch past	18			-6
verb peel behind	17
verb peel past	17
verb peg past	15
verb pick behind					25
verb pick imperative		21
verb pick past	-19	-16	-6	-14	50
verb pick present	10
verb pipe past	19			-13
verb pitch before	9
verb pitch past	10
verb place behind	-21			30
verb place imperative	-23	-5		31
verb plane behind	13
verb plane imperative	16
verb plow past	29			-24
verb plug before	15
verb plug imperative	26
verb point behind	13
verb pop behind	10			-6
verb pour behind	8	-8
verb pour owed	16	-6
verb pour past				15
verb prime behind	8
verb prime imperative	25
verb prime past				5
verb pull behind	9
verb pull imperative	14
verb pull owed	12
verb pull past	6
verb push behind	19
verb push modal	11
verb put before	23
verb put imperative	9
verb put modal	-17	28
verb put owed				-16	7
verb put past				16
verb put present	-13	28		-15
verb raise behind	15
verb raise imperative	15
verb rate behind	23			-5
verb rate past		9		-13
verb rattle before	5
verb rattle present	5
verb reach modal	7
verb read past	4
verb receive past	-42	-21	26	-32	30
verb redo behind			5	-14
verb rehang behind				11
verb relay behind	-7	-5		15
verb relay past	-6	-6	-5	15
verb remind behind			9
verb remind imperative			9
verb replace before		-15	-7	9
verb replace behind		-11		15
verb replace past		-23		21
verb reset behind		-9		9
verb reset imperative		-12		16
verb reset past	20
verb return before	15
verb return behind	-21	-17		-20		30
verb return past	-23	-10	-14	-20		33
verb return present	-10		17
verb rip owed	-5		15
verb rock before	6
verb rock past	6
verb rod behind	-7	20		-17
verb rod past	26			-16
verb roll behind	12
verb roll past	9
verb rough before	8
verb rough past	10
verb rub present	5
verb run before	13
verb run imperative		11
verb sag before	5
verb sand behind	22
verb sand imperative	22
verb sand owed	18
verb sand past				-11
verb sand present	4
verb save behind			11	-5
verb save past			14	-6
verb say imperative	24
verb say modal	28	-12
verb say past	7		7	-13
verb scrape behind	29
verb scrape past	19
verb scratch past				-5		19
verb screen owed	5
verb screw before				16
verb screw behind				16
verb screw past				12
verb scribe before	23
verb scribe modal	23
verb scribe past	10
verb seal before		-15	17	-10
verb seal behind	7
verb seal past	6
verb seat before	9
verb seat modal	9
verb see before		8		-5
verb see imperative		4
verb see modal				6
verb see owed	22
verb seize before	17			-6
verb seize past	17			-6
verb send before	-15	15
verb send behind	-5			-6		24
verb send modal	-11	18
verb send owed	13
verb send past	-8			-9		31
verb send present	27	-13
verb set modal	27
verb set past				7
verb shim before	25
verb shim behind	27			-6
verb shim imperative	10
verb shim modal	8
verb shim owed	18
verb shim past	27			-10
verb ship past			10	-5
verb short past		7		-9
verb should behind		-9		16
verb should modal		-9		16
verb show before		-6	13	-11		4
verb show behind	14
verb show past	-18		18			10
verb show present	32	-4		-13
verb shut behind	6
verb silicone before	19
verb sister behind				6
verb sister imperative	4			-5
verb sister past	-5			24
verb sit before	5
verb sit modal		12
verb sit owed		-15
verb sit past	20
verb sit present	9
verb size behind	25	-18
verb slam present	15
verb slide behind	6
verb snake behind	24			-4
verb snake past	27			-7
verb snap before	-6	15
verb snap past		14
verb snug behind	25			-16
verb snug past	25			-16
verb sort past	21
verb splice before				13
verb splice behind	5
verb splice owed	6
verb splice past				11
verb split past	-23			28
verb spray past	21
verb stack behind	-6	-8		18
verb stack past	-18			24
verb stagger behind	-5	-5		12
verb stagger past				11
verb stain before	-25	20		12
verb stain behind		6		-16
verb stain past	-10	11		5
verb stand behind		9
verb stand past	14
verb start before	10
verb start imperative	5
verb stay before	8
verb stay behind		-16	15
verb stay imperative		-19	19	-9
verb stick imperative	31	-12		-14
verb stick past				19
verb stop before	-25	-16	20	8
verb stop behind	33
verb stop past	20
verb stop present	-20	-15	19
verb straighten behind	20
verb strap behind	-16		8	10
verb strap imperative	-14		15	-13
verb strike before	19
verb strike modal	19
verb strip before	18
verb strip behind	9
verb strip past	22
verb stuff behind	-26			18
verb stuff imperative	-8	9
verb stuff past	-5	-11		22
verb supposed before	-13	-19			24
verb supposed behind	19
verb supposed owed		-15			21
verb swap before	-11			27
verb swap imperative		19		-22
verb swap modal	15		-12	-16
verb swap past	-9	-5		37
verb swear behind	19
verb swing behind		12
verb swing present	15
verb tack behind	13
verb take before				-4		15
verb take behind						29
verb take imperative		-18	18
verb take modal		24	-5	-16
verb take past	-8	-17				48
verb take present		-25
verb talk behind	10
verb talk present	5
verb tap before	13
verb tape before		-5		8
verb tape behind		11
verb tear before	9
verb tear past	11
verb tell before	27			-14
verb tell past	30			-8
verb tell present	13
verb test before	6
verb test behind	16
verb test past	18
verb text behind	5
verb text imperative	7
verb think behind	12
verb think past	25		-5	-8
verb throw behind					7
verb throw imperative		7		-9	13
verb throw past		-14		9
verb tie before	15
verb tie behind	22			-5
verb tie past	24
verb tighten behind	11
verb tighten past	9
verb tile before	5
verb tile past	15
verb top behind	22
verb touch behind	7
verb trim before				14
verb trim behind	27
verb trim imperative	7
verb trim past		-7		15
verb trip before	13
verb trip past	14
verb try behind			7
verb try imperative	-31	9	21
verb try past	29		-8
verb turn before	35			-8
verb turn behind	28
verb turn past	38			-5
verb unopen past	-24	-10	35	-18
verb use before				27
verb use behind				20
verb use imperative	-17	-6		24
verb use modal		15		-20
verb use past				33
verb use present		-22		20
verb wait before	10
verb wait behind	16
verb wait present	12
verb walk behind		-6		-7	18
verb walk past		-8	-6	-11	19
verb want modal		14
verb want present		16
verb wash behind	19
verb weep before	17
verb weep present	13
verb will before	15	-4
verb will behind	20
verb will modal	26	-6
verb wipe behind	14
verb wire before	10
verb wire past	5
verb wobble before	12
verb wobble past	17
verb work before	11
verb work behind	-8		19	-11
verb work past	18
verb work present	7
verb would modal	-13	18		-4
verb wouldn't behind	-7	18
verb wouldn't modal		13		-10
verb wrote behind	16
verb wrote present	16
volume after have far	-37	22	5	-23
volume after have sentence	-45	27	9
volume after need far		-25	26	-18
volume after need here	29	-5	-17	-4
volume after need sentence	-41	36
volume after none far	-46		19	12
volume after none here	-22		-10	27
volume after none sentence	-18			20
volume after used far	-6	-22	18
volume after used here		-19	6
volume after used sentence			-5	5
volume beside bring	-19	19
volume beside buy	-20	36	-10	-8
volume beside buy b nobody	-8	28
volume beside figure		7	-17	-12
volume beside get	-20	12	11	-12
volume beside go	-18		-6	33
volume beside have	-18		32	-7
volume beside have b person	-7		28
volume beside need		30
volume beside need b person	-19	41
volume beside nothing	-13		22
volume beside other b nobody				-6
volume beside other b other	-32	22	-38	-39	19
volume beside other b person	-34	-22	-6	30
volume beside other p other		-16	-19	18
volume beside other p person	-15	-9	37	-12
volume beside pour	-32	-9	-13	37
volume beside take		-23		8
volume beside use				32
volume beside use pp nobody				30
volume beside use pp person				20
volume buy imperative behind	-8	28
volume cue ate	-18	-22	-30	42
volume cue came	-11	-14	25	-19
volume cue have	-24	-4	55	-26
volume cue need		21
volume cue used	-46		5	25
volume flawed	-28	15
volume have present behind	-12		36
volume kept	-20	8	12	-22
volume left #	-33	11	6
volume left about	30	-22	-15	-19
volume left and	-27				19
volume left figure		7	-17	-12
volume left get	-5		16
volume left have	-19		29	-10
volume left me	-12	26	-13
volume left need	-20	50
volume left pour	-32	-9	-13	37
volume left through	-10			27
volume left use				30
volume more	-19	25		-6
volume move past before	-24	-29	9	17
volume move past behind	-21	-18	16	9
volume named before material	-15	-14	37
volume named before part	36	-25	-25	-24
volume named before surface	-15			13
volume named before word				-6
volume named here finish	-37	13		11
volume named here material	-42	8
volume named here word	-19	19	14	-18
volume need modal behind	-15	22
volume need owed behind		6
volume null copula behind	-18	9	8
volume null none no			5
volume other copula behind		-15	10
volume other imperative behind	-7	12
volume other past behind		-15	13
volume other present behind	-42	-6	4	22
volume pointing		34	-20	-26
volume right #	-40			8
volume right Q	-27	14	11	-21
volume right and	-11	38	-14	-18
volume right in		-24	-22	20
volume right leave	8	-9
volume right of	-25	33	-19	-6
volume right on	-30		29	-13
volume says copula behind	-15		14
volume says imperative behind	-25	37	-5
volume says modal behind	-44	20	-32		17
volume says none no			5
volume says owed behind		15
volume says past before	-56		19	19
volume says past behind		-11		13
volume says present behind			5
volume sold so false	-6
volume sold so true	-26		26
volume then move pp	8	-9
volume then other b				-4
volume then undefined will		-8	-24	13
volume then work pp	-42	-5	25
volume use past behind				32
volume verb be behind		-15	10
volume verb bring behind	-7		10
volume verb figure behind		7	-17	-12
volume verb get behind	-21		16
volume verb go behind	-8			21
volume verb have behind	-12		36
volume verb leave before	-13		25	-6
volume verb need behind		9
volume verb null behind	-18	9	8
volume verb null no			5
volume verb use behind				32
volume whole clause	-15	8		5
volume work past behind			-12	9
weight after need sentence		6		-17
weight after none sentence			-12
weight after used sentence	-10	-28		24
weight beside hold	19
weight beside measure i other	13
weight beside nothing	-8	8	-9	9
weight cue have	-23	-33	26	4
weight cue need	-37	39
weight cue used				20
weight left #	-27	5	-5	25
weight left at	22
weight left hold	20
weight name flawed	-11	6		6
weight named before material				10
weight named before word	-20	14	-14	11
weight named here material	-33	20		12
weight named here word	-13		20	-9
weight null copula behind	26
weight null none no		5	-6
weight right #	-13	9
weight says copula behind	39			-19
weight says none no		5	-6
weight says past before	-16	-20	-5	32
weight says past behind	-6	-33		24
weight sized	-11	23
weight sold so false				8
weight verb null behind	26
weight verb null no		5	-6
weight whole clause	16			-24
weight work past behind	17	-15	-8
who goods modal		14
who nobody owed		17
who nobody present	-9	-5	44
who thing imperative		11
whole false		-40	30
whole true	-8
`;
