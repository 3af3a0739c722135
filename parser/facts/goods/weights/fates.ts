/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after '					4
after )	-5
after +	-18
after /	-21
after 1	-4		15
after 22	-19		23
after 4		17
after =	19		-15
after >	35	-13		-8
after @	-5
after about	5
after above	17
after acclimate			12
after across	18
after actually	22	-9	-14
after add	-8	-13		19
after adjust	12
after aff	-14			19
after afternoon	7
after against				9
after aint			-13	15
after air	36
after alder	-7	16
after allen	17			-8
after almost			-13	11
after already	-9
after alright	7		-9
after altogether	11
after aluminum		10		-17
after american	-27	35
after anchor		19
after anybody	23	-9
after anybody's		18	-11	-17
after anyhow	21
after anymore	13
after apiece	34	-12		-29
after approve	13
after apron						7
after area		9		-5
after aren't	16		-9
after asbestos	30	-14
after awful	26
after b	19
after baby				11
after back bedroom	11
after back room	15
after back wall	27		-21
after backing up	9
after backorder	-33	28			17
after backs up	9
after backsplash	-5			14
after backwards	12
after bad	8
after bag	-18		19
after bakery	17
after balance	-4		20
after balcony	-16		23	-9
after ball	21	-8
after band	27	-5	-9	-16
after bang				7
after banging	-5			13
after bank				9
after bare	22
after barely	21
after barn	9		-24	-11	19
after base	10
after bay	9
after bays	18
after bead	7			-5
after beautiful	-7			15
after bed	22
after bedroom 2	24	-5
after bedroom 4	13
after bedrooms	17
after beep	-7			11
after being	17
after believe	10
after bend	11
after beside	4			-9
after bet			-11	13
after better	17	-6
after between	14
after bien	9
after bigger				11
after bin	-22		32	-11
after bite	11
after bled	-11		-13		25
after bleed	12
after bless	25
after blink				5
after blister	10
after block	6
after blue	-8		16
after blunt	-15	20		-11
after board	11
after boat	10
after body	-18			22
after boil	20
after bond	13
after bore	-4
after boss	25			-7
after bother			10
after bought far imperative	5
after bought far modal	24
after bought far past						23
after bought here		-19	-4		54
after bought here and	12
after bought here comma	-27	-24	-17	-28	37
after bought here copula		-8		-11	26
after bought here none	-33	-34	-20	-26	43
after bought here past	14
after bought here present	-35	-11	-7	-9	44
after bought here run-on	-8			-5	25
after bought here start	-7			-10	32
after bought here stop		-9		17	-4
after bought here word		-10	-21	-7	23
after bought sentence					15
after bought sentence and	-13				10
after bought sentence comma		-26	-8	-47	59
after bought sentence copula	17
after bought sentence modal					14
after bought sentence none		-51		-45	62
after bought sentence owed	-17	18
after bought sentence run-on	9
after bought sentence word	13
after bout	7
after bow	32
after bowl		11		-7
after bowls	11
after box	-27		21
after box room	17
after boy	7
after boys			9
after brace				8
after brand	-16	-20	-7	-16		25
after bread	16
after breakfast	8
after breast	17
after breathing	14
after bridge	13
after bright	4
after bring			8	-10
after bristol	-8				18
after broke off	15
after bronze	-27	11	18
after broom	13
after brother	6
after brush	-6		9	-10
after brushed nickel	-22	9				16
after bubble	10
after buckl	8
after buff	-6			12
after bug	19
after bulge	20
after bulkhead	4
after bump	7
after bunch		-8		7
after bury	19
after butt	-13	6		8
after butt joint	14			-5
after butter	-11	13
after button				8
after buy	-12	26
after buzz	32	-12
after bye	-22	27		-6
after c	9
after cab	-8	19		-23
after call	10
after came off			14	-7
after car	5
after carbon	12
after care		9
after carpenter	-21	25
after carry	-19	14	7
after cars	24	-8		-9
after cart			-15	-6	22
after carton	-21	9	16
after carts	6
after case	-16	9	13	-4
after casita	-34	20	23
after cast	31	-14		-13
after catch	32
after caulk	25			-5
after cedar	-14	13
after cellar			12
after centers	27			-14
after centre	6
after centres	23
after chair	7	-22		7
after chalk	15
after change	-14			25
after channel	26
after char	22
after charcoal	-21	14	11	-4
after charge	-20			18
after chatter	27		-11	-6
after cheap	-9	28	-8	-10
after chip						12
after chirping	21
after chirps	-9			7
after chok	19
after choose	-31	33
after chrome	-14					25
after chuck	17			-4
after church				12
after chuy	19
after circuit	5		-11	4
after claim	17
after clamp		16
after clear	8
after clearance	-13			18
after clicks	12
after client	4
after clinic	18
after clip				5
after clocking	23	-13
after clog	12
after closet	19
after co	-7			17
after coal	19
after coat closet	13
after code	7	-20
after code's	14
after coffee				10
after cold	9
after collar	29		-11	-6
after color	8
after color match		5	-12
after column	22
after coming off	8
after commission	29		-16
after common		5
after compact	40			-31
after complain				10
after completely	23
after connect	-7			14
after contact	-11			17
after conversion	-9			16
after cook	9
after cooling	16
after cope	-15	21
after copier	33	-22
after core	-4	9
after corners	-10	-17		17
after cornflakes	9
after corridor				18
after corrosion	22
after couch	14
after count	6
after counter		-28
after counting	-22	-27	-9	34
after course	14
after crank		6
after crawl	19
after cream	5
after credit	6
after crew	22
after crimp	15
after crook	24
after cross	6
after cross threaded	24
after crosses		8
after crown	29
after crumbl	11
after crumbling	-19	21
after ctr	27	-15		-15
after curl	15
after customer	-6			16
after cut out	25
after cut short	22			-8
after cut wrong		-7			14
after dab	-33	-9	-20	37
after dale	-8		15
after damage	15
after damp	11
after dangerous	24
after dark	14
after dash	-13	-6	23	-20
after date	15
after daylight	28	-9
after days	23
after dead	14
after deal		7
after decide	6
after deck	34
after degrease	10
after deli				14
after deliver	-24		9	-10		8
after delivery	-22	28
after den	6		-7		6
after dent	6			-8
after dial				8
after die		14
after different	26
after dig		6
after dim	22
after dime		10
after dining	15
after dining room	7
after dips	-6		-6	15
after discharge	14
after disconnect	21			-9
after doctor	7
after dogs	18
after dont		10
after doorway	23
after dope	-18	23		-10
after dormer	9
after dots	22	-16	-7	-9
after doubl	14
after double		-9		19
after downstairs	20
after drag	20
after drags	12
after drags on		8
after drain line	4
after draw	11
after drawings	7
after dresser	18
after dribbles	5
after driver	-9	-9		-23		24
after drum	11
after drywall guy	-30		17	22
after duct			14
after due	23
after dull	13
after dumpster	35			-9
after dust						11
after e				10
after ear	32	-5	-22	-9
after early		12
after ears	7
after east	20
after east side		-12	-9	16
after easy	7
after eat	10
after eave		-7		5
after edges	15
after eggshell	-12	17	-10	-27		20
after eighth	6
after either	22
after electrician					25
after else	5
after em's	19		-7	-6
after ends	11
after engineer	21
after enough	9	-22	17
after ensuite	10
after enter	11
after entrance	30			-15
after entry	16
after epoxy	21
after even	20
after ever	23
after everybody	28	-6
after everything	32
after everywhere	30
after exam					14
after exhaust	25			-9
after expire	-9	17
after extension	30	-10		-18
after extra	-23		19
after eye	30			-16
after eyes	15
after face	-8	4
after fail	16
after fall	32			-6
after fallen	-6		16
after falling	16
after falls	10
after family	11
after family room	-8
after far				24
after far end	13
after fast	19
after fasten				11
after fault	14
after feed	5
after fell	-6	10
after fell off		6		-8
after fell out	10
after fella		7
after fellas	10
after fence			16
after field				15
after fifth	8
after figure	11
after final	-9	18
after finger	9
after fireplace	-6			22
after first coat				9
after fish	12
after fit				9
after fix				15
after flaps		-5		16
after flash	17
after flight	6
after flip	12
after float	19			-7
after flood	-25			30
after flood test	15
after floor	7
after floor's			8
after floors	21
after flower	7
after flu	14
after foggy	-15			20
after foil	-20	-18		19
after foot	4
after footing	-6
after footings	-12	-6		21
after forget		9
after forklift	21
after foundation		12	-5	-8
after fourth	44		-5	-28
after foyer		-10	-5	-9	21
after frame		14
after fray	25
after fre	9
after free	20
after fresh	29			-6
after front edge				10
after front room	21
after fronts	26			-17
after frost	-12			8	17
after frost's	9
after fully	16
after gable	-8	17
after gal	-25			29
after gallery	22			-13
after gap's	13
after garage			7
after garbage	29	-8		-8
after garden	9
after gary	-8			6
after gears	-9	18
after give				15
after glaze	22
after glue				10
after goat	5
after gold	-7			15
after golf	5
after gotta	8
after gouge	-13			4		10
after grab	22
after grade	7
after grain	26
after grinder	12
after grit	8
after groove			5
after growlers	17
after guest room	6
after guide	25			-12
after gum	5
after gurgles			-7	-9	19
after gurgling	12
after guys	15
after gym			12
after h		5
after ha	5
after haha	28			-24
after haint	9
after hair	29
after hairline	24
after half			10
after half's	21			-15
after hall bath	15
after hall closet	9			-7
after hall's	19
after hallway	13
after hammer	9
after hammering	-7			14
after hand			18
after hands		13
after hank	8
after happy	6
after harbor	13
after hard	24
after harden	34	-25
after hasn't		11	-9
after haul	-10	18		-19
after have far imperative		21
after have far modal		7		-4
after have far owed		11
after have far run-on	12
after have far word	21
after have here and	17
after have here comma	30
after have here imperative			13
after have here modal	28
after have here none			27
after have here past	15
after have here present	12
after have here run-on	20
after have here start	-14		30	-20
after have sentence comma			24	-13
after have sentence imperative		28
after have sentence none	-18	5	25	-13
after have sentence word		43
after haven't	-36	22
after hay	24
after he'd		10
after he's	11
after headboard	21			-14
after hear	10
after heart	15
after hearth	20
after heat gun	26	-4
after heater	-16	25
after heave	6
after heavy	-14	22
after heel	9
after hell	6
after here			12
after hers				9
after herself	19
after high spot	10
after higher	5
after himself		6
after hip	19			-6
after hissing	12
after hit	15
after hitch	7
after hockey	9
after holds water	-17	20
after holes				7
after holiday	28
after hollow	30
after home	-28		33
after honest	-12	16
after hot neutral reversed	-14		18
after hour	19
after house	4
after hub		-10		15
after humid				8
after humidity		11
after hung up	14
after i'd	15	-15
after i'll	5
after i've	-18			12
after ice	13
after inch	-37	37				11
after inside corner	24	-19
after inspection	25
after inspector	-13	14	4
after inspector's	12
after install	-24			32	8
after insulate	18
after into				26
after island	-9
after it'll	7
after its	9
after jam		8
after jet	31		-20
after job	-10
after join	11
after joint	-6		7
after joist bay	8
after junk	23		-8
after just	16
after kick		7
after kid	-14			5
after kid's	4
after kill	6
after kind	-7	19
after kinda	24	-15
after kink				6
after kisse	19
after kit	-22			14
after kits		-13
after knee	11
after knee wall				9
after knife	31	-19		-6
after knock	7
after know	23
after kowalski	8
after lab	-10	20	-16
after lacquer		16		-24
after ladder	13
after lads	16
after lady	34	-22			-17
after lag	40
after landlord	11
after lane				9
after language		-22	-10	10
after lap	11
after laser	10
after late					18
after later	4	-7
after latex	35	-4	-6	-8
after laugh	15	5		-18
after laundry	13			-16
after law	5
after lead	-12	23
after leaf	8
after leaning			23	-11
after least	34		-7
after led	17	-15		-6
after left end	6
after left hand	-12		8			12
after left out	-18	16	5	-8
after left wall	9
after leg	6
after legs		-8
after length	11
after lengths	-34	-24	22			22
after lens	13
after less	18	-14
after let go	19
after lid		18
after life	-9	14
after lightweight		-6	16	-15
after lime	11
after line	18
after link		-24		20
after lint	24
after list	-6	36	-5	-31
after lit	9
after little	-10
after live	20
after lobby		-7		-12	24
after lock	-9			16
after loft	-5		10
after lol	24
after lon	5
after long wall	20
after longer			10
after lord		-21	-15	16
after lose	4
after lot						7
after lounge	-5			10
after lovely	16
after low spot				13
after lube	-6	12
after lunch	24
after lying	-29	34
after m		10		-14
after machine	21
after man		4
after man's	-17	19
after manny		8		-4
after mark	27
after mask		22	-20
after mason	8
after master	24
after master bath	23
after mat	17
after mate		17		-10
after matter	19
after max	11
after maybe	10
after meantime		7
after meanwhile	29	-12		-23
after melt	10
after metal	-21	6		20
after metre	10
after mice	8
after mill	23
after min	14
after mind	6	8	-12
after mine		14
after mine's	-33	37
after minimum	33	-23
after mistake	24			-12
after miter	19
after moisture	12
after mold	-6			15
after mop	28			-24
after morning	14
after mortise	17
after most	25			-21
after mould	9
after mount	-11			39
after move	9
after movers	26
after mr	5
after much						12
after muck	4
after mud		5		-7
after mud room	-5			13
after murder	9
after mush				11
after must	18
after my			12
after myself	6	-12	-6	-20	15
after n	15
after name			17	-7
after narrow	15
after natural	-11	23
after ne	19
after near	30
after nearest	23		-6
after nearly	22
after need		5
after need far imperative		7
after need far modal	5
after need far word	9
after need here modal		11
after need here none	-11	59		-6
after need here past	26	-6
after need here start	-30	44
after need here stop		15
after need here word		13
after need sentence comma		30		-8
after need sentence imperative	41
after need sentence none		61
after need sentence owed	32	-26
after need sentence past	-7
after need sentence present	-9
after need sentence stop	-28	-16	-4	34
after need sentence word	29
after needle	20			-15
after neighbor's	20			-10
after neighbors	21
after neither	15
after neutral	38
after next door	19
after niche		16
after nick	7
after nickel	18
after night	27
after ninth	-11			18
after nite	11
after no good	18
after no water		-16		11
after nobody	36
after none	-17	-23	32	-18
after none far owed		29
after none far run-on	12
after none far word	32
after none here imperative		26
after none here modal		8
after none sentence stop	6
after nope	26	-15
after north	20			-10
after nose	-18			21
after not flat	7
after not straight	5
after nothing	16
after notice	5
after numbers	25			-6
after nursery	5
after office	-5		14
after oil	7
after ok			12
after okafor	5
after once	23
after ones	-33	28
after op	13
after open	8
after or	6
after orange	28		-26	-6
after order	-66	19		-9	79
after others	-11			18
after oughta	7
after out of level	14
after out of square	17
after outta	6	-17		5
after overflow		-7		11
after oversize	17
after own	6
after owner	6
after p	13
after packed solid	10
after painted over	14
after painted shut	14
after painter		13
after painter's	7
after pair	13
after pairs	7
after parapet	12
after park		17
after parking lot	9
after parlor	20
after part's	-15			24
after partial	-16	-14	24	-16
after parts	-18	-20		7	21
after party wall	10
after pass	8
after passage	33			-23
after past	25
after path	5
after patience		19	-22	-5
after patio	-8	15
after pay	-22	-17		-18	34
after pea	23			-4
after peak	21			-10
after pedicure	8
after peg	5
after people	20
after per	32	-7
after perimeter	11
after permit	8
after pero	-16			27
after phone	12
after pick	-15	32
after pictures	9
after piece	11
after pieces		6	-11
after pillar	17
after pin	25
after pinch	13
after pinhol	-7			14
after pit	11
after pizza	17
after plain	-6	16
after plan	6
after plant	-12	24		-8
after plate		-11		8
after play	5
after please		29		-8
after plenty	-38	29	21	-21
after plum	15
after plumb				5
after plumber	18
after plus	-14	24		-24
after pocket	-9		11
after pok	22
after pokes		10
after pole	10		-8	-19
after popcorn	-8	-18	25	-16
after popped off	6
after pot	5
after pour	8
after powder room	-16	10	5
after power	22	-16
after prep	-16			19
after pressure	18
after pretty	-21			28
after price	6
after prime		22
after probably	26
after problem	12
after profile	37	-27
after promise	-6	9			4
after prop				11
after properly	13
after proud of	16
after pt	-21			23
after puck	9
after puddles	4
after pull	4
after pump			5
after punch	-24					25
after punky	30
after puppy	15	-5
after push	9
after putty	-22		22
after quick	-8			22
after quiet	-37			45
after quit		13
after quote	18
after r	20			-4
after rack	15
after rains		8
after raise	4
after rake	-18	10
after rattle	12
after raw	6
after rawlplug		14		-9
after re		5
after real			14
after really	26
after rear	21
after rebuild	24			-10
after receipt			6
after reception	14
after recess	6
after red	-10		6
after red oak	-21	12		-10		18
after redo	23
after reeks	-29	32
after reglue	20			-10
after rehang	5
after render	-8	-9		20
after rental			8	-14
after repair	19			-8
after replace	-8			33
after require		15	-5	-15
after reseat	21			-10
after reserve	19	-18
after reset			8
after rest			-27	10
after return	6					17
after returned far	-15		8
after returned far comma	-6	21
after returned far copula	17
after returned far none	-16	17	6
after returned far owed	-8
after returned far past	-20	-5	16
after returned far stop	-7		19
after returned here	17
after returned here and	20
after returned here copula	7
after returned here past	23
after returned here run-on	11
after returned here start	21
after returned sentence					9	7
after returned sentence and	-17			-8	26	7
after returned sentence comma	-4	-12	-9	-32	6	30
after returned sentence imperative			13	-11
after returned sentence none	-12	-39	-22	-33		47
after returned sentence owed		19
after returned sentence past		-8	-10		34
after returned sentence word	24	-8
after reverse	5
after right's	7
after ring	13
after rip	6
after rise		-15
after road	32
after rock	15
after rocks	19
after rod			-6
after roll	-16
after roof	11
after roof's		7		-10
after rooms	-14	-4	11	5
after roots	30
after rough	-6		10
after rough opening's	-28			14		20
after row	27
after rub				8
after rubber		11
after run's	26			-12
after rusted through	25
after s		-15		8
after safe	-18	17	-4
after sag	15
after sala	16
after sandwich	19	-4
after sanitary	27	-7
after sap	7	5		-17
after sausage	15	7	-26	-22
after save	17
after saw	26
after scale	16
after school	4
after scrap	14	-12
after scrape	26
after scratch	24
after screed	11
after screen		14
after screw pops	17
after screwed up	-19	-7	-18	26
after seal	11
after seat			23
after second				11
after second coat	7
after second floor				12
after see	12
after seize	19
after self	-5	-11			21
after service	16
after settle				7
after shaking	26			-10
after shave	20
after shear	15			-6
after sheath	13
after shed	-21	11
after sheets			11	-11
after shift	11
after shingle	9
after ship	5
after shoot	19
after shop			8
after short		14
after should	-5
after shoulder	18
after shred	19
after shut	22
after shy	34
after side's		4
after sideways	31
after sign	19
after signal's		-4		11
after silicone	17
after silver	-7	25
after site	-36	-4	59	-35
after skim	7
after skin			5
after skins	8
after skip	12	-7		-5
after skirt	8
after slab		5
after slabs				14
after slap		12		-17
after sleep	14
after slid	14
after slide	10
after sliver	12
after slope	26
after slot	24			-19
after slow	10
after sludge	6
after smack	-27			30
after small	18
after smooth	4
after snake	9
after soak	7
after sock	10
after soft	10
after soft spot	-11			15
after solder		-16	16
after somebody's	9
after someone	7
after something	17
after somewhere	10
after sort	24
after south	9
after south wall	7
after space				11
after spare	-43	-24	59
after spares	-52	-10	18	19
after sparky	8	-8	5
after special	21			-18
after spill	7
after spin	11
after spins	20
after spits	4
after spitting	12
after splash		8
after spongy	26
after spoon	24			-11
after spray	33
after spread	-15		-7	25
after spun	12			-4
after square	6
after squeeze	35	-17
after stairs	5
after stairwell	-4	-5	16	-10
after station	-5		4
after steam	26
after sticky	25			-16
after stinks	26
after stock	-12	-17		19
after store		-6	6	-28
after storm	-5	13
after story	12
after straight				17
after straighten	14
after street	9
after street side	21
after strip	15
after strong	7
after stub	-18			27
after stucco	11
after stuck open	20
after study			7	-5
after stuff	-19	23
after style	-23	27		-15
after sub	-18		-8	26
after suit	31
after summer	20
after sun				15
after sun porch	4
after sunroom	-6	9		4
after super	27			-11
after supplier		-11				16
after supply	15
after supply house	-52		-36	-39	22	35
after support	-15				18
after supposed					15
after sure		11
after swap	-4			40
after sweat		7
after sweep		11
after swing						10
after swings shut	7
after swole			10
after table saw	22
after tacky			13
after tae	9
after tag	-16	27
after tailgate	15
after talk			-5	24
after tank	12
after tap	29
after taper	4
after tarp	-17	18		-8
after tell				5
after temper		10
after template	22
after tenant	25	-9		-10
after tenth	8
after terminal	6
after termite	6
after terrible	9
after test	7
after than	14
after thanks	20	-15
after the boss	12
after the boys				10
after the city	-16	27
after the guys		8
after the kid	-15			18
after the kids				5
after the lab	24
after the lady		10
after the wrong			13
after the yard				-14		21
after them's	-9			15
after there's	-25	23		5
after thermometer		5
after they'll	15
after they're	10
after they've	16			-19
after thickness	-22		29
after thin	-20	22
after things	16
after think	10
after third	31			-12
after third coat	11
after tho	-8			18
after those		20
after thread	19
after throw	19
after thumb	11
after tidy				4
after tie	23
after tight	23
after tiler's	5
after tin	-9	-17	25
after tip	-5	11
after toaster	26
after together	24
after too big	26			-8
after too deep	-6	17		-9
after too far				8
after too high	39	-7
after too long	-9	15		-9
after too low	11
after too short	31
after too tight	12
after too wide	14
after tooth	-17	23
after top edge		18		-19
after torque				11
after total	8	-27		14
after touch	27
after towards	11
after towel	-13			18
after town	-18	22
after trade	-24	24			10
after traffic	6
after trailer	-30	-42	44
after trash	18		-7	-6
after treat	-5	12
after trim		6
after trouble		-9		8
after trowel	8			-29	13
after truck	-4		31
after truss	18
after try	25
after tube				11
after tubes	-9	20	-10
after tuck	14
after twice	34			-7
after twin	24
after twist	15
after typ	16
after type		-6		10
after underside	8
after units			11
after unless	5
after unopen	-33		47	-25
after update	6
after uphill	-6			12
after upper				7
after upside down	23
after upstairs hall	7		-7
after urethane	-19	18
after use				13
after used far and	36
after used far copula	6
after used far owed		13
after used far run-on	28
after used here comma	-11			33
after used here copula				9
after used here imperative		-7
after used here modal	13	-25
after used here none	-5			34
after used here owed		9
after used here past	13
after used here stop	17
after used here word	6
after used sentence and				7
after used sentence none				24
after used sentence owed		6
after used sentence word		5
after ute	-38	-23	32
after utility	5
after utility room	13
after vacation	9
after vacuum	15	-18			12
after van	-59	-19	88
after varnish				9
after vent		10		-8
after very	18
after vestibule	-6			13
after visit			10
after vs	8
after wait	23
after waiting room	12
after wall's				8
after walnut	-7	-10	18
after wander	17
after warm		6
after warranty	-26	31
after water's		17		-22
after waterlog	15
after waterproof	18	-8
after wavy	10
after wax	12			-14
after way		8
after ways	-24	20		7
after weak			7
after weatherstrip		7
after wedge	26	-19
after wee	15
after weep	37
after weight	30		-14
after welder	22	-12
after west		17		-11
after west wall	15
after wet	5
after wet saw	21
after what	12
after what's	15
after whatever	-29	31
after wheel	27	-4
after whenever	20	-5
after while	-33			14
after whistling				4
after white	-25	11
after whoever's	15
after whole	27
after wholesaler	-5	-11	-15	-12		21
after why	8
after wi	22
after wide	20
after width	-11					13
after wife	20
after wiggle	20
after wind				5
after window company	-13			17
after wing	7
after wipe	4
after wire	27
after without	14
after won't latch	26
after won't reach		4		-5
after wonder	19
after wore out	-12	18
after worst	25
after worth	30	-8		-13
after would		14
after wrap	-5
after wrong	9	-10				14
after yank	8
after years	35	-13	-4	-13
after yep	12
after yes		6
after you're		19
after zip	7
after zone	-18		15
again bought	5				-38
again have	23		-29
again need	77	-78
again returned	-31		-4		35
again used			54	-60
ahead &	-27	21		9
ahead '	23
ahead (		-11
ahead +	-13
ahead -	9
ahead 3	-20			28
ahead 5	13
ahead :	12
ahead =	19		-15	-12
ahead >		4
ahead @	28
ahead ]	11
ahead above	20
ahead acclimatising	25			-14
ahead account	16
ahead actually	-16	-16	8		19
ahead add	-7	5		7
ahead adjust	24
ahead afternoon	23
ahead afuera	17
ahead air	8
ahead airing cupboard's	-18	22
ahead alarm	29
ahead alive	20
ahead allow	23			-6
ahead almond	-21	28
ahead almost			14	-6
ahead alone	-24	-8		-8	35
ahead aluminum	25			-11
ahead alvarez	-10	16
ahead american	19	-5
ahead anchor		-7		5
ahead angle				14
ahead any		11
ahead anybody	23
ahead anyhow	6
ahead anyone	13
ahead anywhere	23
ahead apart	17
ahead apartment	13
ahead apartments	-11	-7		18
ahead apron	21
ahead arlene	25	-16	-11	-15
ahead arm	-12			25
ahead attic room	-8			16
ahead attic's		10	-14
ahead awful	7
ahead ay	13
ahead b	46
ahead baby	14
ahead back bedroom	21
ahead back edge	6
ahead back porch	27
ahead back slope	-13			19
ahead back wall	4
ahead backing up	24
ahead backsplash	-5		14	-8
ahead backwash	10
ahead bad	31	-4
ahead bag	-15		30	-23
ahead bakery	5
ahead balcony	5			-5
ahead ball	8
ahead balls	18	-5
ahead band		6
ahead bang			-13	7
ahead bank	-5	19	-11	-11
ahead bar top	18
ahead barber	7
ahead bare	16	-5
ahead barely		8
ahead barn	18
ahead bars	6
ahead basement		-8
ahead basement bath	-11			20
ahead bathroom	13
ahead bays	23
ahead bc	-19	-5		23
ahead bead	-13
ahead bear				8
ahead beaut	7
ahead bed		-20		16
ahead bedroom 2	16
ahead bedrooms	24
ahead believe	-8	-22	-8	23
ahead belly in	7
ahead bench	-9			16
ahead beto	17
ahead better	-9	25		-10
ahead between	18
ahead bill		5
ahead bin		27	-19	-14
ahead bind	7
ahead birch	7
ahead black				-20
ahead bled	-7	10
ahead bleeding through	4
ahead bless	6
ahead blister	34	-8		-24
ahead bloke	11
ahead blower door	29
ahead board	-7
ahead board's	9	5		-19
ahead boiler room	8
ahead bolt				21
ahead bond		15
ahead bone		8
ahead bonus room	14
ahead both	21
ahead bottoms	-19			24
ahead boundary	13
ahead bout	-20	28
ahead bow in	4
ahead bowl	9
ahead bowls	26			-12
ahead box room	7
ahead boy	30
ahead br	-5	-14		20
ahead brace	15
ahead brake	16
ahead branch	12
ahead brass		14	-5
ahead break room	19
ahead breakfast nook	16			-4
ahead bring		21
ahead bro	7
ahead broke off	33		-5	-19
ahead bronze	-10	25
ahead brother	22
ahead brush	-7	9	13	-21
ahead bubble				8
ahead buddy	8
ahead bug	12
ahead bugger			10
ahead build					7
ahead builder		12
ahead building control	12
ahead bulk	-19	14	7
ahead bulkhead	-18			21
ahead bunch	-18			21
ahead burn				22
ahead bust	17
ahead butler's pantry	-5			12
ahead butter	7
ahead buttons		-25	-15	18
ahead buy	-11				17
ahead buzz	10
ahead c	4
ahead cab	-12		9	4
ahead cafe	19
ahead cake	11
ahead came loose	23			-10
ahead came off	21
ahead cant	27			-8
ahead cap				11
ahead car	22
ahead card				5
ahead card's	10
ahead care	-6	-4		17
ahead carpenter's	22			-14
ahead carport	10
ahead carry		9
ahead cat	14
ahead catch	5
ahead cedar	-6			16
ahead ceiling	13
ahead ceiling's	37
ahead ceilings	9
ahead cellar	15
ahead center	16
ahead centre	13
ahead centres	22			-5
ahead chair	7
ahead chalk	18
ahead channel		9
ahead charcoal		7
ahead charge	16
ahead cheap	-23	16		8
ahead cheek	6
ahead chew	12
ahead chip	7
ahead chip out	15
ahead choose	12
ahead chrome	-27	32
ahead chuck	-12	26
ahead chunk	21
ahead circuit	7
ahead claim	7
ahead clamp		-6		22
ahead cleaner				7
ahead clearance	13
ahead click		-19	17	-9
ahead client	15
ahead clinic		8
ahead cloakroom	19			-13
ahead clockwise	10
ahead close	5
ahead co		8
ahead code	36	-21
ahead coffee	28
ahead coffee's	6
ahead cold side's	32	-13	-20	-4
ahead coming up	24	-8
ahead complete	14
ahead composite				-13	19
ahead con	-10	-13	-11	20
ahead conference room				8
ahead connect	20			-5
ahead contact	-5		11
ahead cook				11
ahead cooler	14
ahead cope	7
ahead copy	-12			22
ahead core	14
ahead cork			5
ahead corners	15
ahead could	13
ahead couldn't	11
ahead count	-9		27	-4
ahead counter	9
ahead counters	6
ahead county	27	-8
ahead course	22
ahead cousin's	16
ahead crawl	-7			18
ahead crawlspace				9
ahead crew	31		-11
ahead crook	14
ahead crumbling				8
ahead crush	13
ahead curdy		10		-18
ahead cure	-7		-9	22
ahead customer	17
ahead cut out	19
ahead cutout	7
ahead cycle	13
ahead d	6			-4
ahead dad	14
ahead damp	13
ahead dana	18
ahead dang	17
ahead dark	12
ahead date				-5
ahead decide			10
ahead deck's	-12		-7	20
ahead dedicate	14	-5
ahead deep	12
ahead deliver			12	-12
ahead delivery	-22	-18	30	-25
ahead demo'd	35			-11
ahead denny's	16
ahead dense	-11			17
ahead dental	16
ahead dentist	6
ahead dentist's	23
ahead desmond	15
ahead di	24	-15	-8	-17
ahead diagonal	8
ahead dial	16
ahead die	6
ahead difference	6
ahead different	8
ahead dim	12			-6
ahead dime	14
ahead ding	28
ahead dining	20
ahead dining room	16
ahead dip		7	-15
ahead discharge	27
ahead disconnect	29
ahead dodo	-19	22
ahead doesn't cover	9
ahead dollar	6
ahead doorway	7
ahead dormer	15
ahead doubl	18			-7
ahead double	-9		6
ahead draft	19
ahead drag	16
ahead drags on	16
ahead drain line	25			-23
ahead dressing room	-15	-9	-11	27
ahead dribbles	13
ahead drill	6
ahead drip	16
ahead driver	-28			20		20
ahead driveway			-5
ahead drop	7
ahead drum			9
ahead drywall	8
ahead drywall guy	19
ahead ds	9
ahead dummy	10
ahead dump				14
ahead dumpster	4
ahead dunleavy			5
ahead dunmore				11
ahead dust	28
ahead dutchman	23
ahead dye	15	-11
ahead e	18
ahead each	17
ahead ease	19
ahead east	15
ahead east wall	5
ahead eat				26
ahead eave	-23		27
ahead eaves	7
ahead edg	19
ahead edges				6
ahead eggshell	-15	24
ahead eighth	8
ahead either	24
ahead electric	8
ahead electrician	21
ahead electrician's		20
ahead elevator guy	23	-11
ahead else	-5		26
ahead empty	21
ahead en suite	12
ahead ends	-15	9
ahead engineer	-13	-9		14
ahead enough			16
ahead entry	13
ahead epoxy	-16	11
ahead even		-9		4
ahead evening	9
ahead everybody	19
ahead everything's	24	-17
ahead exam					14
ahead exam room	27	-24
ahead exhaust	9
ahead extenders	-17	22		-17
ahead extension	-16	-17	23
ahead exterior	-5	11
ahead extra	-11			13		6
ahead face	29
ahead fall	11
ahead falta		13		-11
ahead family	6
ahead far			4
ahead fat	-8	16
ahead feather	25
ahead feed				11
ahead feet	-22	30	-7
ahead fell		19	-13	-16
ahead fell down	5
ahead fell off	20
ahead fella	12
ahead fence				7
ahead fence line	-12			18
ahead ferry's	13
ahead fetch	-29	34
ahead field	-16	27
ahead fifth		-11		14
ahead figure		16
ahead file	9
ahead fill				4
ahead finally	27			-20
ahead finger	19
ahead fire	4
ahead fireplace	-10		17	-5
ahead first fix	8
ahead first floor	12
ahead fish	23
ahead fit	-5			11	4
ahead five's	24	-7	-7
ahead fix	11
ahead flame	31			-22
ahead flap	9
ahead flaps	19
ahead flat roof	9
ahead flexible	-27	34
ahead flood	12
ahead flood test	-8		17
ahead floor	5
ahead floor guys	13
ahead floor's	8		-10
ahead flow	20
ahead flush	15
ahead foam				17
ahead fog	9
ahead foil	-12		19
ahead folks	20			-6
ahead follow	15
ahead foot		17	-12	-4
ahead footings	17	-7
ahead forever	5
ahead forget		14
ahead form	18
ahead fourth	20
ahead foyer	5
ahead frame	6
ahead framer	12
ahead framers	22	-12
ahead framing's	10
ahead fre			12	-9
ahead free	4
ahead freeze	13
ahead fresh	-18			16
ahead front edge	-8			17
ahead front room	29			-7
ahead fronts	25			-18
ahead frost		11
ahead fur	-20	9		10
ahead furniture			13
ahead g'day	26	-18
ahead gable	25
ahead gallon	-27	-5	19	17
ahead gang		6
ahead garden	29			-9
ahead gary	-4		16	-11
ahead gas line	-14			20
ahead gauge	33			-17
ahead gc	20
ahead genius	20
ahead gie	-6	14
ahead girl	25	-11
ahead glass guy	-11	5			11
ahead glazier	-16	13	11	-4
ahead god	7
ahead golf	26
ahead gonna		5
ahead gotta		7
ahead grab		14
ahead granary	20			-6
ahead granddad	22			-6
ahead gray	-13		18	-6
ahead grease	8
ahead green	-14	20
ahead grey	15
ahead groove	15
ahead grout haze	5
ahead grunt	-24	-20	15	18
ahead guard	-10	-11	7	9
ahead guest room	30
ahead guide	27	-14
ahead guy	4
ahead guy's	25	-17
ahead guys	14
ahead gym	20
ahead h	-18	14		7
ahead hair	28
ahead hairline crack	11
ahead half			22	-7
ahead halfway	-15	23		-21
ahead hall closet	-12	-8	20
ahead hall's				11
ahead hallway	9
ahead handset	31	-31
ahead hanging off	-11	26		-6
ahead hank		8		-13
ahead happen	6
ahead hard					6
ahead hardy	10
ahead hasn't	31
ahead hate	6
ahead haven't		21	-7
ahead hay	17	4	-12	-20
ahead he	4
ahead headroom	4
ahead heart	6
ahead hearth	6	-9
ahead heat	-6		7
ahead heat's	6
ahead heater	18
ahead heavy		7
ahead height	17			-8
ahead height's	20			-11
ahead hello	9
ahead hendersons	17
ahead here's	20
ahead herself			12
ahead hide	26
ahead hiding			18
ahead high	27
ahead high spot	16
ahead higher	-11	16
ahead highest	-12		19
ahead hip	21	-18
ahead ho		10
ahead hole's	-5			10
ahead holiday	21
ahead holidays	5
ahead holler	18
ahead home		-28	-14	-21	35
ahead honeycomb	6
ahead honeycombing	7
ahead hook				6
ahead horse	-23			28
ahead hose	17			-8
ahead hot water	11
ahead house	5
ahead how	-17		14
ahead hub	16
ahead hum		6
ahead humidity	16
ahead hump	14
ahead hung up	25
ahead hvac	-8			17
ahead i'd				-5
ahead i'm	-5	19
ahead i've			26
ahead inch	-14	21
ahead inject	-8				19
ahead inside corners	27	-7		-21
ahead inspection	-15				24
ahead install				18
ahead instead	43	-20
ahead insulate	-14			21
ahead intake	8
ahead iron	5
ahead island	12
ahead island's				8
ahead isn't	19
ahead it'd	16			-4
ahead itself	-7	29
ahead jack		-10		9
ahead jefe	14
ahead jess	-7			11
ahead jet	10
ahead john	6
ahead join	-6			9
ahead joiner	21	-9
ahead joker	25			-21
ahead junior	11
ahead junk	-8			15
ahead k	15
ahead kayla	24			-20
ahead keeps tripping	10
ahead kerdi	-11	21
ahead kessler	-18			21
ahead kick						15
ahead kid	18
ahead kid's	13
ahead kid's room	5
ahead kids	7
ahead kids bath	9
ahead kill	14
ahead kind	30	-12
ahead kindly	-18	22
ahead kit's	22			-7
ahead kitchen's		-24	-21	16
ahead kitchenette				5
ahead kits	-8		17	-22
ahead knee wall	13
ahead knees	6
ahead knife	-12	18
ahead knit	8
ahead knot	-18	21
ahead know				14
ahead kowalski	8
ahead l	19
ahead la	9
ahead label	20
ahead lacquer			25	-24
ahead ladder		-17
ahead lads	9
ahead lady	32
ahead lady's	14
ahead lag		9
ahead lake		-8				10
ahead land	19
ahead landlord	26	-16
ahead lane	12
ahead language	15
ahead lap	5
ahead laser	-4	7
ahead last	-17		27
ahead latch	-6
ahead late	16
ahead laundromat	30			-10
ahead laundry	32
ahead lawn	8
ahead layer	-13			14
ahead layers	21
ahead leaf	43		-18	-14
ahead leakage	20
ahead lean	-14	26		-7
ahead leans	24
ahead learn	7
ahead least	10
ahead ledge		-16		10
ahead left end	7
ahead left hand	7
ahead left out	28
ahead leftover		-19	32	-27
ahead legs	-7	19
ahead lena		-9		10
ahead less	29		-10	-8
ahead lift	32
ahead lightweight	8
ahead lime				7
ahead line's	9
ahead linen	-10	-13		21
ahead linen closet	-30			37
ahead liner	25	-4
ahead lint	17
ahead list			18
ahead listen	28
ahead lit	-6	-6		18
ahead lite	-8	12
ahead live	9
ahead living	13
ahead living room	28
ahead load	9
ahead lobby	21
ahead locker room			-7	11
ahead loft	5
ahead long		19
ahead long wall	21			-10
ahead loop	19
ahead lord	11
ahead lounge	19
ahead lovely	6	-5		-5
ahead lows			14	-18
ahead luis	40	-10		-21
ahead lying	-6	-11		18
ahead m	28	-15
ahead machine	14
ahead main	8
ahead maker	16
ahead manny	22
ahead maple		6
ahead mask	7
ahead mason	15
ahead master	9
ahead mat	13
ahead mate	-5	8
ahead max	29	-9		-12
ahead maybe			20
ahead means	19
ahead meant	22			-6
ahead meantime	-4			12
ahead meet	11
ahead meg	21
ahead melt	9
ahead mention	7
ahead mess	-18			14
ahead metal	-13	10	11	-19
ahead mid	33
ahead mike	-10	15
ahead mill					18
ahead mind	12
ahead mine	25
ahead mine's	20
ahead minus	27
ahead miss		6
ahead mister	19
ahead mitre	7
ahead moisture	38			-10
ahead moisture meter	33	-8		-17
ahead moisture's	18			-6
ahead mold	25			-7
ahead more		5
ahead mortar				11
ahead mortise	21			-11
ahead most	18
ahead mother	21	-11
ahead mount				15
ahead mouse	-8			15
ahead mr	18
ahead mud	-9	5	6
ahead mud bed	14
ahead mudroom	12
ahead mush	-12			17
ahead myself	-24			25
ahead nae		14
ahead nail holes				13
ahead natural		19	-25	-5
ahead ne	8
ahead nearly	-18	-4		31
ahead need		20
ahead neighbor	35		-11
ahead nest				11
ahead neutral				10
ahead never	4
ahead new				9
ahead next door	24	-9
ahead nice	-8	5
ahead nick	12
ahead nickel		-17		6
ahead night	22
ahead nip		-18	17	-21
ahead no power	26
ahead no water	8
ahead nobody	25
ahead nobody's	-6	16		-8
ahead none	-13	6	7
ahead noon					5
ahead nope	-14	20
ahead north	10
ahead north side	20
ahead north wall	14
ahead not	5
ahead not touching	24
ahead notch	16
ahead note	20
ahead notice	5
ahead nowhere		18	-26	-25
ahead number's	-4	20	-13	-18
ahead numbers	46		-7
ahead nurse	-20	21
ahead nursery				19
ahead nursery's	10
ahead oak				8
ahead offcut		-18	13
ahead oil	11
ahead okafor's	-6			14
ahead ol	-5	13
ahead old	15
ahead one's	48
ahead onto	7
ahead open neutral	22
ahead opened up	28
ahead operatories	28			-15
ahead order		13			9
ahead ortiz	21			-5
ahead others	25	-11
ahead otto's	6
ahead ought	20
ahead oughta	21
ahead our	38			-28
ahead out of level	11
ahead out of plumb	15
ahead out of square	8
ahead outdoor	-14	11
ahead outfit	10
ahead outside corner	9
ahead outta	13
ahead overhang	21
ahead owe		11
ahead own	16
ahead owner's	21
ahead p	-24	12	-7	19
ahead pack				24
ahead painted shut	34			-18
ahead painters	-7		-13	17
ahead pair	9
ahead pantry's	-8		11
ahead paper		16
ahead park	13
ahead parlor	19
ahead part	22
ahead parts	-8	18
ahead party	34	-22		-7
ahead party wall	14			-5
ahead pastor	-8		-17	22
ahead patio			17
ahead patron	7
ahead pay	18	-8	-7	-6	5
ahead pea	-7	17
ahead peeling off	13	-21
ahead per	18
ahead permit	18	-7
ahead pero	11
ahead pete	-5	15
ahead photo	16
ahead pick		21			10
ahead picture	14
ahead picture frame				14
ahead pictures	11
ahead pieces	-11	-6	26	-21
ahead pier	-19	-9	19
ahead pile	-20		26	-6
ahead pin				13
ahead pinch	10
ahead pine	13
ahead pinhole	9
ahead pitch	16
ahead pl		4
ahead plain	15
ahead plan	22
ahead plane	23
ahead plaster					5
ahead plate's	25			-10
ahead play	4
ahead please		10
ahead plenty	-23		38
ahead plow	23			-19
ahead plumb	24
ahead plumber's	-6	16
ahead pocket	5
ahead poke	10
ahead polish	10
ahead polymeric	-43	33	18	-14
ahead pop	7
ahead poplar	-31	-17	18	20
ahead porch	14
ahead pound	13			-5
ahead powder		12
ahead powder room's	16
ahead presse	10	-8
ahead pressure	29
ahead pressure test	-17			22
ahead pressure treated	-21	30		-20
ahead pressure's	36			-9
ahead prob	11
ahead probably	13
ahead probe	15
ahead problem	19
ahead profile	-6		8
ahead promise	-17	25		-6
ahead proof	9
ahead prop	18	-5
ahead proper	-30	13		13
ahead proud	14
ahead proud of	5
ahead pull	7
ahead pump		6
ahead punch	20
ahead punky	21
ahead purge	22
ahead push	9
ahead put				5
ahead putty		5
ahead quick	14
ahead quiet		9
ahead quit	7
ahead quitting			7
ahead quote	19
ahead rack	10
ahead radon	19	-5
ahead ramiro		-15	19	-11
ahead rang					18
ahead rat			11	-7
ahead rather	15
ahead raw	4
ahead ray	11
ahead re	20
ahead read	6
ahead rear	18
ahead rebate	14
ahead reboard	10	17	-7	-25
ahead rebuild	-23			30
ahead recaulk		-17	13	-9
ahead receipt's	12
ahead reckon		7
ahead recoat	20			-8
ahead recut	20
ahead red		14
ahead redo	-15	7		8
ahead refit	27			-14
ahead refix	-20	-13	-10	27
ahead rehang				5
ahead rekey	10
ahead relay				10
ahead release	24	-18
ahead relief	20	-7
ahead remains	23
ahead remake	-8	4
ahead remember	5
ahead remodel	14
ahead render	9
ahead rent	11
ahead rental	30	-8
ahead reorder	-20	13			10
ahead rep	-10				14
ahead repair	-36	-17		44
ahead replace				20
ahead replacement	25
ahead report	23
ahead require	-12		15	-12
ahead reseat	-6	-19			21
ahead reset	9
ahead rest	-5		5
ahead restroom	15
ahead return						18
ahead return's	16
ahead reveal's		5		-9
ahead rh	15
ahead rick		6
ahead ridge	7			-8
ahead ridgeway	19
ahead riding					15
ahead rigid	-15	-6	-5	26
ahead rings		7
ahead rise	23
ahead rm	12
ahead road	11
ahead rob	-11			9
ahead rock		-13	-13	12
ahead rocking	20
ahead rocks	6
ahead rod		6
ahead rolando	8
ahead roof	30
ahead roots	19
ahead rosa	14
ahead rotten		14		-14
ahead rough	24
ahead rough opening	9
ahead rough plumbing	13
ahead roughly	28
ahead rout	-14			20
ahead row				4
ahead rub	9
ahead rubber	-14	7
ahead rubbing on	18
ahead rudy	18
ahead run's		6		-7
ahead rung	-6	-26	-28	-11	25
ahead runner	34	-9		-9
ahead rusted through	10
ahead s	14
ahead safe	-17	27
ahead sag	7
ahead sage	-35	34	4	-27
ahead sala	20			-10
ahead sample	16
ahead sander	14
ahead sandwich	11
ahead save	11
ahead saw	27
ahead scab	-13			20
ahead scrap	9
ahead scrape	28
ahead screed	22
ahead screen	12
ahead screw holes	18			-9
ahead screwdriver	26
ahead scuff	11
ahead seal's	15
ahead seam	6
ahead seams	28
ahead seat	40	-22
ahead second coat	14
ahead second fix	24			-8
ahead second floor	-20			14
ahead second floor's	-13			16
ahead self	13
ahead selfie	-12			18
ahead send	-6
ahead separate	21			-11
ahead set				7
ahead settle	-19			-15	22
ahead sewing room	-19	-32	34
ahead shave	22
ahead shd	15
ahead she'd		10
ahead shear	31	-9
ahead shed					13
ahead shed's	-18			21
ahead sheet			14
ahead sheets	13
ahead shift	20
ahead shin				6
ahead shingle	-11		24
ahead shiny	11
ahead ship				-5
ahead shop	-10	12
ahead shop's		7
ahead short		43
ahead shorted us	-31	41		-10
ahead shot				31
ahead shove	-5		20	-16
ahead show	16
ahead shower floor	-8			8
ahead showroom	20
ahead side's	-14	-6	5	13
ahead sign			5
ahead sill plate	19			-8
ahead sillas	4
ahead single	-12			11
ahead sink cutout	4
ahead sinking	-5			11
ahead sir	20
ahead sister				16
ahead skim		-11		6
ahead skins	-17	22
ahead skip	16
ahead slab's	19
ahead slap	-6	17		-18
ahead sledge	14
ahead sleeve	-37			40
ahead slice	-20			24
ahead slid	-29			41
ahead slide	5
ahead slip		12	-10	-5
ahead slope	26
ahead slow	13
ahead slump	5
ahead small		11
ahead smear				14
ahead smell	5
ahead smooth	-9	-6			23
ahead snag		18	-5	-16
ahead snake	35
ahead snap	7
ahead snow	5
ahead snug	-9			19
ahead soak				7
ahead soap	-8			14
ahead socks	6
ahead soft		18
ahead soft close		-12	19	-18
ahead sold	10
ahead solder	-20	17			4
ahead solid	7
ahead somebody's	26
ahead someplace	7
ahead somethin	24			-12
ahead something				7
ahead somewhere	18
ahead soon	-9	16
ahead sorry	29
ahead sort				-4
ahead sound	34
ahead south wall	18
ahead space	14
ahead spare			12
ahead spec	16
ahead special	17		-14	6
ahead spend	-6				16
ahead spill	14
ahead spin	22
ahead spins				-14
ahead spits	8
ahead spitting	12
ahead splash	37
ahead sponge	25	-12
ahead spongy	16
ahead spray	12
ahead sprayer	-21	18
ahead sprayer's	15
ahead squeaky	-5		-16	21
ahead squeeze				7
ahead stack	-7		17
ahead stagger	-12			16
ahead staircase	23
ahead stairs				10
ahead staple	7			-5
ahead static	13
ahead static's	10
ahead station	18			-6
ahead stays on		-20	19
ahead steam				11
ahead steel	5
ahead steel's	8
ahead step	16
ahead steps	59	-21		-9
ahead sticker	15
ahead stiff	10
ahead stock	-34		28	-22
ahead stockroom	-24			29
ahead stone guy	-9			15
ahead store	-11				25
ahead store run	-29	37	-20	-19	-16
ahead storm	28			-14
ahead story		-10		6
ahead straight	12
ahead straighten	9
ahead strap		7
ahead street		-9	-8	14	7
ahead strong	21
ahead stuff	-6			7
ahead sub	20
ahead suction	12			-8
ahead suit	9
ahead summer	14
ahead sunroom	20	-9
ahead super	29
ahead supplier					17
ahead supply house		16		-15
ahead sure	13
ahead surgery	32			-17
ahead surprise		12
ahead surround	-13	19		-8
ahead swap	-16			20
ahead swear	29	-11
ahead sweat	-20	-12	10		7
ahead sweet	29
ahead switch	-6	-12	18	-6
ahead system	12
ahead t	10
ahead tack				9
ahead tae	9
ahead tails	29
ahead talk	14
ahead tank's	4
ahead tarp	10
ahead tea		14
ahead temp	30
ahead temporary				4
ahead tenant	11
ahead terminals	27			-17
ahead termite	-6	13
ahead terrace	20			-12
ahead terry	15
ahead test	15
ahead text	9
ahead than	22
ahead thank	16
ahead thanks	13
ahead that'll				-13	7
ahead the city	12
ahead the kid	16
ahead the kid's		-29		17
ahead the kids	20
ahead the lady's	28
ahead the wife	19
ahead the yard	13			-11
ahead thermal	17
ahead thermometer	12
ahead these	37		-12	-17
ahead they'd	28
ahead they'll	14
ahead they've			11
ahead thick	-21			34
ahead thickness	6
ahead thing	6
ahead things	5
ahead third	-4		7
ahead third coat	10
ahead though		-12	-11	14
ahead thread				7
ahead three's	24
ahead tidy	9
ahead tight	5
ahead tighter	25	-21
ahead til	-18	30
ahead time	-5
ahead times	-14	19
ahead tin	17		-10
ahead tiny				12
ahead toast	-8	16
ahead toaster	8
ahead together	-4	-9		27
ahead tongue	23			-12
ahead tony	-26	-11	21	8
ahead too high	9
ahead too long	11
ahead too short		-6				9
ahead top plates				10
ahead top's	17
ahead total	-5			13
ahead touch up	21
ahead touch-up	17
ahead toward	7
ahead trace	17
ahead traffic	20
ahead traffic's	13
ahead trailer		9
ahead training room	27			-15
ahead trench	22
ahead trim	-24			9
ahead trim guy	12
ahead trip	21
ahead triple				8
ahead trowel	10
ahead trunk	13
ahead trust	15
ahead tube	-25			34
ahead tubes		9
ahead tuck	7
ahead twist	11
ahead two's	19
ahead ty	13
ahead type	-7	17		-6
ahead u	20
ahead undercut	18
ahead underneath	4
ahead underside	15
ahead understand	19			-6
ahead unglue	14
ahead units	19
ahead unless	13
ahead unsand	-5	13		-15
ahead uphill	13
ahead upstairs	30
ahead upstairs bath				12
ahead us	-6	7
ahead use				20
ahead utility	19	-8
ahead utility room	4
ahead v	-16			20
ahead vacuum					12
ahead valley	17
ahead van	-11		32	-26
ahead varnish	25		-21
ahead vault	9
ahead vendor	27
ahead vent				6
ahead very	20
ahead voltage	22			-5
ahead vs	9
ahead w	7
ahead walls	10
ahead walnut	15	-18	-16	11
ahead wanna	7
ahead wardrobe	11
ahead warm	18
ahead warranty	4
ahead wash	38
ahead wasn't		10
ahead water	8
ahead water line				6
ahead water proof	-15		19
ahead water's	10
ahead wavy	16
ahead ways	24
ahead we'd	-17	34		-12
ahead we'll	-5	36
ahead we've		-9	8
ahead weather		10		-11
ahead weatherstrip	21	-12
ahead week	12
ahead weigh	5
ahead weight	44			-13
ahead weld		-7	7
ahead welder	24
ahead well	4
ahead were					8
ahead weren't	32	-11		-26
ahead west	11
ahead west side	26		-6	-17
ahead west wall		7
ahead what's	-14		40
ahead whatever	17
ahead where	10
ahead whip	9
ahead white	-7		7
ahead whitlock's	16			-5
ahead who	22
ahead who's	21
ahead whoever	27
ahead why	15
ahead wi	17	-12	-13
ahead wider	-18	18
ahead will		12
ahead wind		10
ahead winter	11
ahead within	34
ahead without	-10	15
ahead wobble		-7	22
ahead won't hold	5
ahead won't latch	6
ahead won't reach	27	-13
ahead won't shut	-11			16
ahead won't stay	18
ahead wont	8
ahead wore		-14
ahead worst	11
ahead worth			4
ahead write		27	-5	-9
ahead wrong	18
ahead wrote	15
ahead x	-17
ahead yard		10		-14
ahead ye	13
ahead yeah	25		-14
ahead year	13
ahead you'd	-18	-8	-10	26
ahead you'll	18
ahead you're		8
ahead your	17
ahead zip	11
ahead zone				5
any	263	-113	-165	-103	-299	-347
area after none far		-17	24	-46
area after none here		-28	-15	-16	23
area after none sentence	7
area before it back	-17	34		-24
area before it have		-5	11	-6
area before it lacks	-20	21		-16	16
area before it need	-25	23	-11	-21	18
area before it used			-11
area behind it have	31	-21
area behind it lacks	-19	12	-8	14
area behind it need	-29	21	-11	6
area beside do	-13			22
area beside finish		-7		4
area beside get	10	-20		5
area beside have			10
area beside is	-13			17
area beside need	-14	19
area beside need b person	-10	15		-5
area beside nothing	-9			7
area beside other b other	-4	14		-12
area beside other p other				5
area beside undefined is other	-7	-5		19
area beside work b other	11	-7
area beside work pp other	38			-28
area cue have	-18	-11	33
area cue lacks	-27	29	-6		6
area cue need	-37	38	-13	-7	14
area cue used	-19				17
area flawed		4	-4
area left ,	6	-12	-11	9
area left .	-33	-23	17	21
area left :	-4			16
area left about	40			-18
area left down	-24	-18	-10	31
area left it's	37	-15		-17
area left maybe			-11	6
area name flawed	-15			6	11
area named before word	22
area named here material	-55		15	38	7
area named here word	-23		10	12	8
area need owed behind		9
area null copula behind	-14		8	8
area other copula behind	-7	19		-11
area other past behind	12	-7
area right ,				6
area right .	-5	10
area right and	-17	-8	6	14
area right down	-5	-12	-13	19
area says copula behind	-15	7
area says imperative behind	-26	22		-11	15
area says modal behind	-24	33	-12	-16
area says past before	-21	-6		28
area says past behind		-30		24
area says present behind	-4	-30	15	-24	20
area sold so false	-17			9
area sold so true	-16	7	-17	16
area then use pp	-26		5	25
area then work b		-15	16	-23
area then work bpp	-6	-5		20
area then work pp	-10			25
area verb be behind	-7	19		-11
area verb get behind	15	-17
area verb need behind	-14	19
area verb null behind	-25	-5	4	6	18
area whole clause		-10		13
area work past before	-27	-9	-5	33
area work past behind	-15	-19		25	8
bare after returned here	4
bare before it bought	5
bare behind it ate	15
bare beside add	41
bare beside adjust				9
bare beside ain't	6
bare beside am	13
bare beside arrive	15
bare beside backorder	9
bare beside bag	-17	22
bare beside balance	26
bare beside bend	23
bare beside bet	7
bare beside bleed	4
bare beside block	6
bare beside board	23			-7
bare beside bolt				16
bare beside book	5
bare beside bring	-20	30
bare beside build	27
bare beside burn	14
bare beside butter	11
bare beside buy	38	-11
bare beside buy b nobody	-8	14
bare beside buy b other	6
bare beside buy b person		14
bare beside buy i person	15
bare beside buy pp nobody	8
bare beside buy pp other	8	-30			14
bare beside buy pp person					14
bare beside buzz	12
bare beside cap				11
bare beside carry	10
bare beside caulk	16
bare beside chew	10
bare beside choose	8
bare beside clamp				7
bare beside clear	11
bare beside clog	8
bare beside coat	21
bare beside come	5
bare beside complete	19
bare beside core	5
bare beside count	35
bare beside cup	5
bare beside cure	20
bare beside deliver	15
bare beside demo	4
bare beside dont	11
bare beside doubl	6
bare beside draw	8
bare beside drive	19
bare beside drop	6
bare beside dry	5
bare beside duct	9
bare beside dump	13
bare beside ease	5
bare beside eat	27
bare beside email				8
bare beside empty		11
bare beside face	15
bare beside feed	4
bare beside figure	15
bare beside file	9
bare beside fire	5
bare beside fish			8
bare beside fix	16
bare beside flash	9
bare beside flicker	9
bare beside flip	8
bare beside foam				8
bare beside fog	8
bare beside forget	8
bare beside frame		5
bare beside fre	6
bare beside freeze	8
bare beside galvanize	18
bare beside give	13
bare beside gonna	4
bare beside grab	-7	11
bare beside grease	7
bare beside grind	10
bare beside grout	-13			18
bare beside guess	30	-7
bare beside hand	6
bare beside hate	6
bare beside haul	6
bare beside have b nobody	10
bare beside have i person	24
bare beside have pp nobody	5
bare beside have pp person	10
bare beside head	23
bare beside hear	5
bare beside heave	6
bare beside hide	5
bare beside i've		15
bare beside inject	-4				17
bare beside insert	13
bare beside install	13
bare beside insulate	20
bare beside it'll	-10		19
bare beside jam	11
bare beside keep	16
bare beside kick						13
bare beside label	11
bare beside lap	7
bare beside learn	14
bare beside like	7
bare beside line	13
bare beside look	8
bare beside lose	6
bare beside love	4
bare beside lube	17
bare beside mark		8
bare beside mask	5
bare beside match	24
bare beside measure b person	9
bare beside measure bp other	8
bare beside measure bp person	11
bare beside measure bpp nobody				7
bare beside measure p other	5
bare beside measure pp nobody	12
bare beside measure s nobody	13
bare beside mill	4
bare beside miss	11
bare beside mix	-16		19
bare beside mount	19
bare beside move b person	7
bare beside move i nobody	8
bare beside move i other	18
bare beside move p other	16
bare beside move p person	7
bare beside move pp nobody	28
bare beside move pp person	12
bare beside move s other	9
bare beside need b other	15
bare beside need pp other	31
bare beside need s nobody	-7	13
bare beside oil	10
bare beside open	14
bare beside other bpp person	7
bare beside other pp nobody	9
bare beside other pp other	6
bare beside other s person	20
bare beside paper	17
bare beside pay	10
bare beside phone	9
bare beside pick	14
bare beside pin	30
bare beside pitch	10
bare beside place	22
bare beside promise	15
bare beside prop	18
bare beside quote	5
bare beside rack	4
bare beside rake	-5			5	5
bare beside rate	9
bare beside reach	16
bare beside rebuild	39			-22
bare beside recess	13
bare beside reckon	7
bare beside recut	17
bare beside redo		16
bare beside reglue	7
bare beside rehang	17
bare beside rekey	-6			12
bare beside remake	16
bare beside remind	7
bare beside rent		9
bare beside repair	-4			10
bare beside replace	-11			13
bare beside repoint	9
bare beside return	-5		21
bare beside rock	20
bare beside rod	5
bare beside round	9
bare beside save			9
bare beside say b other	4
bare beside say s person	9
bare beside screw	29
bare beside see i person	14
bare beside see s other	6
bare beside set	6
bare beside settle	16
bare beside shin	-7			15
bare beside ship	18
bare beside should	22
bare beside shove	12
bare beside sign	-14		20
bare beside silicone	10
bare beside sister	4
bare beside skin	6
bare beside slid	-14			21
bare beside slide	7
bare beside slit	22
bare beside smooth	5
bare beside snap	17
bare beside soak	11
bare beside soap	12
bare beside sold	7
bare beside sort	7
bare beside spend	22
bare beside splice				6
bare beside spot	6
bare beside square	6
bare beside squeak	5
bare beside stack	25
bare beside stagger	-17			21
bare beside stain	-4			15
bare beside staple	10
bare beside stay	5
bare beside straighten	13
bare beside strap	14
bare beside stretch	8
bare beside supply		10
bare beside swear	5
bare beside switch	8
bare beside tack	15
bare beside tape	22
bare beside template	9
bare beside text	10
bare beside thin	-11			17
bare beside throw	34
bare beside tie	13
bare beside tin				5
bare beside touch up	-9		16
bare beside treat	25	-9
bare beside trip	6
bare beside turn	13
bare beside undefined has nobody	16
bare beside undefined is nobody	10
bare beside undefined is person	10
bare beside undercut	10
bare beside update	9
bare beside use b other	33
bare beside use b person						11
bare beside use pp nobody	4
bare beside use pp other	10
bare beside use pp person	6
bare beside walk	7
bare beside wasn't	28
bare beside watch	8
bare beside weigh	7
bare beside weld	11
bare beside work b nobody	12
bare beside work bp nobody	7
bare beside work bp other	7
bare beside work bp person	25
bare beside work i nobody	13
bare beside work s nobody	10
bare buy imperative behind		9
bare buy modal behind	-10	18
bare buy owed before	-34	38		-6
bare buy owed behind	29	-9
bare buy past before	10
bare buy past behind		-12			16
bare buy present behind	52	-30
bare have imperative behind	15
bare left 
	36
bare left &	-4	9
bare left '	10
bare left (	13
bare left )	12
bare left *			13	-10
bare left +	-13
bare left /	12
bare left ;	7
bare left ?	8
bare left @	6
bare left ]					8
bare left about	18
bare left add	32
bare left after	15
bare left afternoon	9
bare left all	41
bare left already	34
bare left alright	7
bare left anyhow	13
bare left anyway	-13			24
bare left are	9
bare left ask	4
bare left attic	14
bare left away	10
bare left bad	5
bare left bakery	4
bare left balcony	11
bare left bare	11
bare left basement bath	13
bare left bath	11
bare left bedroom	9
bare left bedroom 2	11
bare left before	4
bare left bend	14
bare left beside	14
bare left black	18
bare left blow	12
bare left board	-15		23
bare left boss	7
bare left box	10
bare left bracket	23
bare left break	34
bare left bring		5
bare left bump	7
bare left butter	7
bare left buy	13	-13
bare left c	5
bare left cellar	5
bare left change	-10			16
bare left check	11
bare left chip				8
bare left choose	5
bare left clamp	-9			16
bare left clinic	7
bare left clip	24
bare left closet	15
bare left color	13
bare left come	5
bare left count	26		-6
bare left counter	4
bare left deck	24
bare left den	9
bare left do	5
bare left don't	8
bare left down	17
bare left downstairs	9
bare left drags on	4
bare left drip	4
bare left driveway	7
bare left drop	11
bare left e	11
bare left eat	21
bare left either	5
bare left empty	13
bare left end	10
bare left enough	18
bare left entry	14
bare left every	-7			22
bare left exterior	12
bare left family room	6
bare left feed				4
bare left file	6
bare left find	4
bare left fine	27
bare left first	20
bare left fit	-9				20
bare left flash	6
bare left flat	7
bare left floor			5
bare left foam	18			-4
bare left foyer	8
bare left frame	6
bare left get			10
bare left glue	21
bare left good				7
bare left grab		-20			16
bare left grease	8
bare left grind	9
bare left grout	6
bare left guest bath	5
bare left guest room	6
bare left half	-11		14
bare left hand	18
bare left has	-6
bare left hate	4
bare left haul	7
bare left head	10
bare left her	8
bare left hey	10
bare left hi	4
bare left him	13
bare left house	6
bare left how	11
bare left i'm	38
bare left i've	-24	26
bare left if	10
bare left inside	29
bare left insulate	22
bare left is	6
bare left it	7
bare left it'll	20
bare left its	10
bare left jefe	-9			15
bare left just	6
bare left keep	17
bare left kick	10
bare left ladder	6
bare left last				13
bare left laundry room	11
bare left lay				6
bare left level	10
bare left library	10
bare left like	9
bare left linen closet	14
bare left little	12
bare left load	9
bare left lobby	15
bare left loft	14
bare left long	11
bare left look	8
bare left lose	4
bare left lounge	7
bare left make	9
bare left man	9
bare left mark	9
bare left master bath		4
bare left master bedroom	7
bare left match	7
bare left maybe	20
bare left me	13
bare left meantime	13
bare left mess	-9		17
bare left mind	10
bare left more	13
bare left morning	6
bare left mudroom	8
bare left must	7
bare left n	12
bare left nah	5
bare left nail				12
bare left never	5
bare left news	7
bare left next	9
bare left nice	-17			21
bare left no	27
bare left nothing	4
bare left nursery	11
bare left office	15
bare left on	6
bare left once	7
bare left ones	25	-21
bare left only	26
bare left onto	7
bare left open	7
bare left order	-5	8			13
bare left other	16
bare left outside	12
bare left outta	13
bare left owe		5
bare left pack	37			-10
bare left pass				15
bare left patch	5
bare left patio	13
bare left pick	29
bare left place	16
bare left please	33	-7
bare left plug	22
bare left plumber	-20	23
bare left plus	5	-17		5
bare left porch	5
bare left powder room	12
bare left prime				11
bare left prob	11
bare left proud of	7
bare left quick	16
bare left re	6
bare left reach	7
bare left read				7
bare left rear	-6			14
bare left reckon	11
bare left redo	30
bare left rent	6
bare left replace	-18			28
bare left reset	5
bare left restroom	5
bare left return	-39		38			14
bare left ring	5
bare left rip	5
bare left roll	5
bare left roof	-15			21
bare left room	17
bare left round	9
bare left salon	18
bare left sand						5
bare left scratch			10
bare left screw	24
bare left seal	13
bare left second	6
bare left second floor	12
bare left set	4
bare left shed	13
bare left shim	6
bare left shop	26
bare left short	32	-18
bare left shot	-5			11
bare left should	11
bare left shut	5
bare left side	6
bare left sign	-16		22
bare left silicone	13
bare left since	10
bare left sister	15
bare left sit		5
bare left skip	10
bare left snap	8
bare left snug	8
bare left so	7
bare left solid	9
bare left sort	6
bare left stack	21
bare left stairs	13
bare left stairwell	7
bare left stand	14
bare left still	24
bare left stop	8
bare left store	19
bare left straighten	8
bare left strap	7
bare left strip	14
bare left study	10
bare left stuff	22
bare left sunroom	6
bare left sure	11
bare left swap				8
bare left take						25
bare left tell	5
bare left that	-11		11
bare left that's	52
bare left them	21
bare left there	19
bare left there's	12
bare left they	5
bare left they're	18
bare left thing	23
bare left think	8
bare left third	14
bare left this	14
bare left though	6
bare left through	17
bare left throw	19
bare left tie	10
bare left til	22
bare left tile	15
bare left time	18
bare left too		8
bare left trim	34
bare left truck			5
bare left try	18
bare left turn	8
bare left unit	11
bare left until	7
bare left upstairs	7
bare left upstairs bath	15
bare left upstairs hall	7
bare left us	-9	19
bare left use	32			-10
bare left w	7
bare left wait		8
bare left wall	5
bare left wardrobe	14
bare left warm	6
bare left way	4
bare left we	6
bare left we're	18
bare left well	14
bare left whatever	5
bare left which	17
bare left white	31
bare left wi	5
bare left without	-4	21
bare left work	-9			14
bare left wrong	16
bare left yet	5
bare left your	10
bare left •					8
bare left ☐	-16	22
bare list have	8
bare list need	-7	29
bare list used	28			-16
bare measure modal before						7
bare measure modal behind		22
bare move owed before			21
bare move owed behind	-13	12
bare move past behind	8
bare move present before	7
bare named here area	18
bare named here role	12
bare named here work	16
bare nameless	49
bare need modal before	17
bare need modal behind	13
bare need past before	-7					13
bare need past behind	9
bare need present behind	16
bare null modal before	12
bare null owed before	12
bare null owed behind	14
bare null present behind	5
bare other imperative before	5
bare other owed behind	23
bare return present before	20
bare right !	6
bare right &		5
bare right '	9
bare right (						10
bare right )	21
bare right -	6
bare right /			16	-8
bare right ;	10
bare right =		7
bare right @	45
bare right G	22
bare right N	9
bare right Q	16
bare right a	12
bare right about	8
bare right across	8
bare right along				11
bare right already	-17		27
bare right also		9
bare right aren't		8
bare right ask	13
bare right back						7
bare right bag	-7	17
bare right because	13
bare right bed	12
bare right behind	16
bare right below	7
bare right block	8
bare right bolt	9
bare right book	8
bare right both				11
bare right box	37
bare right break	11
bare right buy	43	-12			-24
bare right call		11
bare right can't	24
bare right cap	8
bare right cause	19
bare right change				5
bare right chew	10
bare right clean	4
bare right clip	27			-12
bare right close	22
bare right complete	14
bare right core				5
bare right cover	9
bare right cup	-10	16
bare right cure	19
bare right deliver	-9	-10	20
bare right didn't	27
bare right die	10
bare right doesn't	4
bare right each	29
bare right empty	10
bare right everybody	10
bare right finally	-29		21	19
bare right find	7
bare right fine	8
bare right finish	25
bare right fit				17
bare right fix	5
bare right flash	8
bare right float	5
bare right flush	20
bare right frame	18
bare right give	5
bare right glaze	7
bare right glue	13
bare right gonna	20
bare right good	22
bare right grab	21
bare right grout	12
bare right hasn't		12
bare right he's	6
bare right head				7
bare right here					7
bare right him	9
bare right his	14
bare right hold	14
bare right hook				7
bare right i'd	13
bare right install	23
bare right into				9
bare right just	16
bare right keep	21
bare right kill	8
bare right lay	6			-10
bare right leave	17
bare right let	4
bare right level	21
bare right look	15
bare right loose	4
bare right low		8
bare right lower	12
bare right me	7
bare right mitre	6
bare right more	19
bare right mount	14
bare right my	9
bare right need	35
bare right notch	8
bare right of	14
bare right oh	5
bare right oil	4
bare right ok	14
bare right okay	14
bare right out	13
bare right over	26
bare right pack	-18	22
bare right past	13
bare right peel	-6	14
bare right perish	-22	13		12
bare right pitch	15
bare right pull	5
bare right put	7
bare right rehang	6
bare right replace				8
bare right return	-6					19
bare right right	12
bare right rip	13
bare right roll	-11	12	12	-18
bare right rough	15
bare right round	25	-8
bare right sand	7
bare right screw				10
bare right scribe	23
bare right seal	16
bare right send	19
bare right she's	8
bare right shim	11
bare right ship	-4				17
bare right short	36
bare right shot		13
bare right should	21
bare right sit	10
bare right slam	5
bare right somebody	18
bare right sort	4
bare right space	16
bare right square	11
bare right squeak	6
bare right stay	9
bare right stop	11
bare right strap	10
bare right stretch	7
bare right supply	6
bare right swell				11
bare right swing	6
bare right take	10
bare right that'll	20		-5
bare right their	9
bare right they're	6
bare right they've	-17	27
bare right this	19	-6
bare right thread	15
bare right throw	5
bare right tie	9
bare right tighten	5
bare right til	14
bare right touch	-9			15
bare right toward	16
bare right trim	38			-14
bare right tuck	13
bare right up	5
bare right us	17			-5
bare right walk	36
bare right want	10
bare right warp						13
bare right wash	7
bare right wasn't	8
bare right were	23
bare right what	5
bare right where	13
bare right while	43
bare right wipe	5
bare right wire	18
bare right wobble	8
bare right wore out	5
bare right work	11
bare right worn	7
bare right would	7
bare right wrap	14
bare says owed before not	-5	7
bare see modal before	7
bare see past before	8
bare then buy pp	4
bare then measure b	13
bare then measure bp	22
bare then move i	14
bare then return pp	-11					21
bare then return s	24
bare then see s	5
bare then use b				13
bare then use pp	8
bare then work bp	14
bare use modal before	18
bare use modal behind	31
bare use past before	8
bare use past behind				6
bare use present behind	-4					16
bare verb add behind		11		-7
bare verb adjust before	9
bare verb adjust behind	6
bare verb arrive behind	10
bare verb back before	7
bare verb back behind	6
bare verb balance behind	23
bare verb bed behind				7
bare verb block before	4
bare verb block behind	8
bare verb blow before	8
bare verb blow behind	12
bare verb bolt before	16
bare verb bolt behind	-14			19
bare verb book before	11
bare verb book behind	8
bare verb bore before	-5			13
bare verb borrow behind		10
bare verb box before	-4	17
bare verb break before	6
bare verb break behind	27
bare verb bring before			9
bare verb bring behind		14
bare verb bubble before	7
bare verb build behind	6
bare verb bust before	5
bare verb buy before		12			-9
bare verb buy behind	20				-11
bare verb can before	12
bare verb cap before	13
bare verb cap behind	24
bare verb carry behind	12
bare verb caulk before	19
bare verb change before	-16	9		13
bare verb chip before	4
bare verb clamp before	15
bare verb clamp behind	-8			16
bare verb clean before	6
bare verb clip before	23
bare verb clip behind	14
bare verb coat before	12
bare verb coat behind	15
bare verb copy behind	-17			24
bare verb could behind	-10	16
bare verb count behind	30
bare verb cover before	16
bare verb crack before	-14	4		4
bare verb crack behind	13
bare verb crush before	11
bare verb cup before	13
bare verb cup behind	11
bare verb cure before	32
bare verb decide behind	-8		16
bare verb deliver before	-18		19
bare verb demo behind		11
bare verb die before	15
bare verb dig behind	14
bare verb do before	15
bare verb don't before	8
bare verb don't behind				7
bare verb drag before	6
bare verb drive behind	19
bare verb dry before	14
bare verb dry behind	5
bare verb dump before	24
bare verb eat before	5
bare verb eat behind	19
bare verb end before	6
bare verb end behind	16
bare verb feed behind				5
bare verb feel behind	10
bare verb figure behind	27
bare verb file behind	7
bare verb finish before	6
bare verb fit before				5
bare verb fit behind	4
bare verb fix before	9
bare verb fix behind	12
bare verb flash before	6
bare verb flip behind	9
bare verb flush before	13
bare verb flush behind	7
bare verb foam before	13
bare verb foam behind	23
bare verb fog behind	9
bare verb forget before	6
bare verb forget behind	31
bare verb frame behind	6
bare verb fray before	5
bare verb fre behind	9
bare verb fur behind				14
bare verb give before	10
bare verb give behind	17
bare verb glaze before	8
bare verb glue before	11
bare verb glue behind	15
bare verb gonna before	17
bare verb gonna behind	16
bare verb gotta before	9
bare verb gotta behind	11
bare verb grab before	18
bare verb grind behind	7
bare verb grout before	9
bare verb grout behind	20
bare verb guess behind	38
bare verb hand behind	6
bare verb hate behind	5
bare verb heave before	6
bare verb hold before	13
bare verb hook behind	24
bare verb i'd behind	7
bare verb i'll behind	17
bare verb inject behind	-8				19
bare verb install behind	9
bare verb insulate behind	16
bare verb it'll behind	-16		22
bare verb keep behind	20
bare verb kick before	7
bare verb kick behind	18
bare verb kink before	5
bare verb knock behind	6
bare verb land before	19
bare verb latch before	8
bare verb lay before	14
bare verb learn behind	7
bare verb let before	5
bare verb like behind	24
bare verb line before	21
bare verb mark behind		12
bare verb miss before	15
bare verb miss behind	23
bare verb mud before	9
bare verb nail behind	31
bare verb notch before	8
bare verb open behind	10
bare verb order before	-21	19			8
bare verb order behind					11
bare verb pack before	18
bare verb pass behind				14
bare verb pick before	16
bare verb pitch before	15
bare verb place behind	35
bare verb plug before	4
bare verb plug behind			5
bare verb point behind	19
bare verb polish behind	7
bare verb pop before	9
bare verb pop behind	15
bare verb prime before	24
bare verb prime behind				13
bare verb put before	17
bare verb raise behind	15
bare verb rake behind	14
bare verb rate before	21
bare verb reach behind	7
bare verb redo behind		12
bare verb rehang before	12
bare verb rehang behind	24
bare verb remember behind	5
bare verb remind behind	21
bare verb rent behind	-8	14
bare verb replace before	-10			22
bare verb replace behind	10
bare verb return before	-9					20
bare verb return behind	-54		46			19
bare verb rob behind	21
bare verb rod behind	-23	24
bare verb roll before	34
bare verb rot before	6
bare verb rough before	7
bare verb round behind	9
bare verb rub behind	4
bare verb rust before	5
bare verb save behind			11
bare verb scratch behind	6
bare verb screen before	5
bare verb screw behind	29
bare verb scribe before	22
bare verb seal before	12
bare verb seat before	10
bare verb send before	-5	8
bare verb send behind	13
bare verb set before	8
bare verb set behind	18
bare verb settle before	10
bare verb settle behind	6
bare verb shave behind	18
bare verb shim before	13
bare verb ship before					15
bare verb ship behind	13
bare verb should behind	13
bare verb sign behind	6
bare verb silicone before	29	-13
bare verb silicone behind	18
bare verb sister behind				5
bare verb skim behind	6
bare verb skip before	8
bare verb slid behind	-18			24
bare verb slide behind	7
bare verb slip before	23			-7
bare verb snap behind	9
bare verb soak behind	8
bare verb sold behind	6
bare verb solder before	8
bare verb solder behind	-5				19
bare verb spend behind					13
bare verb spot behind	-14	20
bare verb squeak before	5
bare verb stack behind	24
bare verb stain behind	7
bare verb stand before	11
bare verb stand behind	-4			15
bare verb stay before	9
bare verb stay behind	15
bare verb stop before	24
bare verb stop behind	17
bare verb straighten behind	8
bare verb strap before	15
bare verb strip before	4
bare verb strip behind		8
bare verb stuff behind				6
bare verb supposed before	11
bare verb swap before				5
bare verb swing before	9
bare verb switch behind	7
bare verb tack behind	15
bare verb tape behind	8
bare verb tear before	8
bare verb think behind	9
bare verb throw behind	25
bare verb tie before	7
bare verb tie behind	12
bare verb tile behind	12
bare verb top before	9
bare verb top behind	4
bare verb trim before	25
bare verb trim behind	36
bare verb trip before	5
bare verb turn before			9
bare verb turn behind	5
bare verb undercut behind	8
bare verb use before	13
bare verb vacuum behind	4
bare verb vent behind	4
bare verb wait before	5
bare verb walk before		11
bare verb walk behind	7
bare verb wax behind	8
bare verb weigh before	7
bare verb weld behind	18
bare verb wipe behind				8
bare verb wire before	9
bare verb wobble before	8
bare verb would before	10
bare verb wouldn't behind	16
bare verb zip behind	7
bare work present before	4
before it bought					45
before it need		6
behind it bought	-16				32
beside add				13
beside add G	30			-14
beside add Q	-21			25
beside add a				5
beside add b nobody	10			-23
beside add b person	8			-14
beside add pp nobody	-10	-7		22
beside add pp person	-25	-19		35
beside adjust ,	-7			14
beside adjust pp nobody	19			-14
beside adjust pp other	-12			19
beside adjust the	5
beside ain't the	5
beside am			13	-7
beside am is person	6
beside anchor		-28		16
beside anchor pp other		-28		16
beside are Q	31
beside are at	25
beside are down				7
beside are fine	-32	36	-5	-22
beside are in				7
beside are on	-26			40
beside are out	17	-27	15	-25
beside are up	-25	-7		44
beside aren't	18
beside aren't is other	18
beside arrive			19	-23
beside arrive pp other			21	-28
beside ask b nobody	16
beside ask b person	10
beside ask i person	-8	24		-9
beside ask pp person	19
beside back	10
beside back pp other	21
beside back pp person				6
beside back the	11
beside backorder	9
beside backorder pp other	9
beside bag				-9
beside bag and	30	-22	-23
beside bag b other	-7	5	8
beside bag pp person	27			-10
beside balance	-9		7
beside balance b other		7	-10
beside balance pp nobody		-8		13
beside band	20			-9
beside band pp person	16			-6
beside be :	-27	-16	-10	32
beside be G	-8	22		-5
beside be T	26
beside be a	-10	14
beside be an	26
beside be at	22
beside be back		23		-14
beside be cut out	17
beside be happy	7
beside be in	20
beside be just	20
beside be loose	-8			13
beside be my	8
beside be off	5
beside be on	14
beside be out	16
beside be out of plumb	12
beside be p nobody	26
beside be painted shut	13
beside be safe	-23	28
beside be there	14
beside be through	33			-24
beside be under	18
beside be up	35
beside bead	-16			18
beside bead b other	-14	11		7
beside bead of	-19	10		9
beside bead on	-7			15
beside bead s other	7
beside bed in	25			-13
beside bed it	-34	15		13
beside bed on	19
beside bed pp nobody	24			-12
beside bend ,	-6	9
beside bend Q	-20	-13		28
beside bend b other	12
beside bend pp nobody	-6			16
beside bend pp other	-7	14
beside bend pp person	14
beside bend the	12
beside bet	11
beside bet b other	8
beside bleed	4
beside bleed i other	8
beside block	9
beside block pp other	5
beside block the	8
beside blow	7
beside blow Q				15
beside blow b other	21
beside blow i other	11
beside blow it	38			-25
beside blow p nobody	-5			13
beside blow p person	11
beside blow s other	8
beside blow the				6
beside board		-12		11
beside board pp other		-13		14
beside bolt	-9			29
beside bolt down	21			-7
beside bolt pp other	-18			35
beside bolt pp person	35			-30
beside bolt to	-23	-5		28
beside book		13		-11
beside book for	-15	28	-9	-12
beside book s other		17	-18	-27
beside bore	18
beside bore pp other	14
beside borrow	-7	8
beside borrow pp person		13		-16
beside bow	10
beside bow pp other	14
beside box ,	-8	-21	-7	10	15
beside box :	41	-38		-43
beside box Q				6
beside box and		20	-17	-30
beside box b nobody	29
beside box by	-13	21		-12
beside box for	19
beside box in	-5		24	-5
beside box of	-23			25
beside box out	6	-9
beside box pp other			7
beside box pp person	-4			11
beside box s other	-10	-6		18
beside box the	5
beside brace pp other			8	-6
beside braid	-13	24		-13
beside braid pp other	-13	24		-13
beside break ,	15
beside break Q	-8	8
beside break b other	21
beside break in		8
beside break p nobody	-5			13
beside break so	-25	8	19	-22
beside break the		11
beside bring		31
beside bring :	-35	37
beside bring G	-8	19
beside bring N	18	-15
beside bring Q	-13	26
beside bring a	-8	21
beside bring b nobody	-17	44
beside bring b other		9
beside bring b person		14
beside bring back	-22					29
beside bring i other	34		-7
beside bring i person	-20	30		-7
beside bring it	23	-29
beside bring me	-13	28
beside bring pp other	18	-32	11	-13
beside bring pp person	-42	-39	20	-24		48
beside bring s other	29	-12
beside bring the	-13	14
beside bring up	29	-25
beside brush	18			-15
beside bubble	4
beside bubble b other	10
beside build				13
beside build ,	-5	-6		14
beside build Q	-7	-19	-6	23
beside build a	6
beside build b other	17	-18
beside build b person	9
beside build pp other				11
beside burn				11
beside burn Q	-35	-9		42
beside burn b other	20
beside burn by	12
beside burn i other	7
beside burn pp other				16
beside burn pp person	-15			19
beside burn up	-21			35
beside bury	11
beside bust	30	-11
beside bust pp other	30	-11
beside butt	31	-8		-14
beside butter		13
beside butter b other		13
beside button				13
beside button pp other				16
beside button up				13
beside buy :	-10	38	-7	-12
beside buy G	8
beside buy Q					12
beside buy a	-16			-13	9	11
beside buy anything	18
beside buy b nobody		48
beside buy b other		25
beside buy b person					36
beside buy i nobody		27	-18	-30	-6
beside buy i person		14
beside buy pp nobody		-17			61
beside buy pp other	-15	-6			15	16
beside buy pp person	-5				37
beside buy that	33				-17
beside buy the	-20		13		15
beside buzz				10
beside buzz s other	9
beside call G				12
beside call Q	24	-12
beside call about	13
beside call b other	5
beside call b person	15
beside call for		6
beside call him			5
beside call me	19
beside call pp other				8
beside call pp person	-8	18		-5
beside call s other		6
beside call s person	9
beside can	5
beside can G				4
beside can glue	11
beside can on	22			-14
beside can will person	6
beside can't	16
beside can't will other	10
beside can't will person	7
beside cap	-13			32
beside cap it	-8			13
beside cap pp other	-20			31
beside cap pp person	19
beside cap the	24			-6
beside carri	17
beside carry	10
beside carry b person	4
beside catch	7
beside catch pp other	5
beside catch s other	5
beside caulk				8
beside caulk ,	10
beside caulk pp nobody		-14		12
beside caulk pp other				6
beside caulk pp person	8
beside caulk the	13
beside center Q	5
beside change				21
beside change ,	12	-7
beside change Q			-7
beside change b other		9
beside change b person	-8			33
beside change her			8	-5
beside change it			11	-39
beside change pp nobody	-23			34
beside change pp person				13
beside change that	9
beside change the	-12			36
beside change their	15
beside charge	20
beside charge b other	15
beside check Q	-12	19	-11	-5
beside check b nobody	7
beside check b person	8
beside check pp nobody	13
beside check pp other			14
beside check s other	16
beside check the	16
beside chip ,	17
beside chip G	-28			32
beside chip Q	23
beside chip on	20
beside chip pp other	34
beside chip s other	-17			24
beside choose	13
beside choose b person	4
beside clad	9	-18	-18
beside clad pp other	9	-18	-18
beside clamp pp other				14
beside clean ,	26			-10
beside clean G	9
beside clean Q	28	-10		-15
beside clean and	5
beside clean as	7
beside clean b other	7
beside clean b person	16
beside clean it	-5			19
beside clean pp nobody	10
beside clean pp other	-8			20
beside clean pp person	27			-12
beside clean through	15
beside clean with	11
beside clear Q		7		-7
beside clear and	-25		19
beside clear pp other	15
beside clear s other	19
beside clear the	18
beside clip pp other				11
beside clip pp person	9
beside clip the	16
beside clog	8
beside clog pp other	6
beside close ,	-17	-9		22
beside close Q	21			-4
beside close b person	22
beside close i other	12
beside close it	5
beside close pp person				6
beside close with	6
beside come ,	6	-28	26	-35
beside come Q		-19	6
beside come T	-18		14	-19	22
beside come a	23
beside come back		30
beside come bp person	-11	18		-9
beside come down	9		-12
beside come for	-14	-5	21	-8
beside come home	-21	-21	-24	-14	30
beside come in			14	-7
beside come off	4
beside come on	23
beside come out	15
beside come p nobody	34	-22
beside come p person	13			-6
beside come s other					16
beside come the			7		5
beside come till	-19	-12	23
beside come to	-32		-15	37
beside come up	16			-9
beside come with						17
beside come without	-10	19
beside complete ,	-9	-14		18
beside complete b other	6
beside complete the	18
beside consum		-18	-21	30
beside consum :		-17	-18	26
beside consum pp nobody		-17	-18	26
beside cook	-9	16
beside cope	19
beside cope pp other	16
beside core	20
beside core b other	20
beside cost	-5	14
beside cost bpp other	-5	14
beside could will person	13
beside count	-16	6	23
beside count Q	-10	6	17	-10
beside count b person		12
beside count pp person	-17		29	-8
beside count the	-26		32
beside cover Q	4	-5
beside cover and	7
beside cover b other	31
beside cover b person	17
beside cover in	11
beside cover it		4
beside cover on	15
beside cover pp other	16
beside cover pp person			15	-14
beside cover s other	-10	19		-6
beside cover with	15
beside crack ,	28
beside crack G	29
beside crack Q	-16		24
beside crack again	4
beside crack and	9
beside crack b nobody	6
beside crack corner	6
beside crack in	10
beside crack on	29			-4
beside crack out	-6		17
beside crack pp nobody		16		-7
beside crack pp person	-39	16		30
beside crack right	18
beside crack the		10
beside crook	16
beside crook pp other	16
beside crush	14
beside crush pp other	14
beside cup	16
beside cup pp other	18
beside cure T	7
beside cure b other	12
beside cut	10
beside cut ,	16	-9	-16
beside cut G	19	-9		-8
beside cut a	-6			30
beside cut all	19			-5
beside cut another	33	-13
beside cut at	28
beside cut bpp person	6
beside cut down	23
beside cut i nobody	9
beside cut i other	18
beside cut i person	22
beside cut it				4
beside cut s nobody	32	-8		-16
beside cut s other	19			-13
beside cut that	17			-19
beside cut the	25
beside cut through	10
beside cut to	23
beside cut with	10
beside date	15
beside date Q	15
beside date pp nobody	13			-5
beside dedicate	12
beside dedicate circuit	12
beside dedicate pp other	12
beside deliver	-27	-23	36	-8
beside deliver pp other	-8	-15	17
beside demo	19
beside demo b other	17
beside dent	17
beside dial	19
beside dial pp other	11
beside didn't	5
beside didn't will other	6
beside die	19
beside die b nobody	5
beside die b other	19			-5
beside die wall	21
beside dig	11
beside dig Q	12
beside dig b other	7
beside dig b person	12
beside dig it	-6	17
beside dig pp other	36
beside dig pp person	21
beside ding	15
beside ding pp other	5
beside ding pp person	13
beside ding the	13
beside do ,	20
beside do :				14
beside do Q	-5	-13		36
beside do T	-7	-30	-19	-40		37
beside do a	-5	15
beside do all				9
beside do anything	14
beside do at	-16			22
beside do b person	13
beside do both	29	-9
beside do but	16
beside do except	18
beside do i other	-27	14	19
beside do i person				5
beside do in	10
beside do it		12
beside do p nobody	24			-5
beside do so	-14	19
beside do the	5
beside do with	-22	13	-10	11
beside don't G	5
beside don't hook	-4				17
beside don't trust	10
beside don't will nobody					14
beside don't will other	22
beside don't will person				5
beside dont	11
beside doubl	22			-11
beside doubl pp other	21			-12
beside drain	16
beside draw	18
beside draw Q	17
beside draw p person	6
beside draw s other	11
beside drill Q	7
beside drill on		-9	16	-16
beside drill out	-28			35
beside drill pp nobody	-19			30
beside drill pp other	15
beside drip ,	-11	-4		22
beside drip G	26
beside drip Q	10
beside drip at	5
beside drip b nobody	15
beside drip b other	17
beside drip from	25
beside drip pp other	-8			17
beside drive Q				19
beside drive p other				-5	16
beside drive p person				21
beside drop Q	-32	-4	25	8
beside drop a				7
beside drop i other	5
beside drop off	30			-11
beside drop pp nobody	12
beside drop pp person		-5		13
beside drop the	22
beside dry ,	5
beside dry Q	6	-24	14	-23
beside dry and	13
beside dry b nobody	18
beside dry i other	6
beside dry on	7
beside dry out	8
beside dry pp other			7
beside dry so	11
beside dry the	10
beside dry then	7
beside duct	9
beside duct pp other	8
beside dump Q	-13	-10	-8	21
beside dump i other				9
beside dump s other	6
beside dust b other			5
beside ease	8
beside ease it	9
beside ease pp person	6
beside eat				18
beside eat Q	-46	-24	-14	59
beside eat a	11
beside eat b other	22			-4
beside eat b person	-7			16
beside eat i other	8
beside eat my	10
beside eat p other	-13			28
beside eat p person	9
beside eat that	25			-13
beside eat the	14
beside eat up				4
beside email				8
beside empty		12		-8
beside empty ,	-13	22		-17
beside empty b other		20		-17
beside end	15
beside end up	15
beside exchange	-30	17		15
beside face	15
beside fail pp person	10
beside fail the	9
beside feather	21
beside feed	-24			31
beside feed G				11
beside feed b other	-8	5
beside feed pp other	-17	-7		21
beside feel	11
beside feel b person	15
beside feel it	14
beside figure		19
beside figure Q	-8	33		-6
beside figure b other	-10	35
beside figure b person	9			-6
beside figure i person	-12	24		-5
beside figure pp other	26	-23	-9
beside figure pp person		-5	8
beside file	11
beside file b other	7
beside fill b nobody	13		6	-13
beside fill her	7
beside fill it	-7			14
beside fill pp nobody	7	-9
beside fill pp other				9
beside fill s person	11
beside fill that		-6		8
beside fill the	15
beside fill with	-5			30
beside find G	20
beside find Q	-20	-19	35
beside find a	14
beside find out	5
beside find pp nobody			17
beside find pp other	33
beside find pp person	31
beside find the	8
beside finish ,	-7			25
beside finish G	-15		16	-11
beside finish Q	-25	-25		37
beside finish b nobody		-16		9
beside finish b person				6
beside finish bar	13
beside finish but	9
beside finish floor	-10		18
beside finish i person	13
beside finish my				11
beside finish on	24
beside finish pp nobody	16	-6
beside finish pp other	22			-6
beside finish pp person	22
beside finish to	18
beside finish with	21
beside fire	5
beside fish b other			10
beside fit ,	-21			23
beside fit Q	10	-8
beside fit bpp nobody		9		-18
beside fit bpp other					17
beside fit bpp person	25
beside fit pp nobody		-5		14
beside fit pp other				11
beside fit s other	16
beside fit the	-10				21
beside fix b other		8		-22
beside fix b person				15
beside fix it	8
beside fix pp nobody	12
beside fix pp other				23
beside fix pp person	10
beside fix that	14
beside fix with	-23			27
beside flash b other				13
beside flash the	7
beside flicker	9
beside flip it	15
beside flip pp person	24
beside float b other	6
beside float b person	8	-11	-5
beside float it	-24	-11	-6	30
beside flood	14
beside flush	32
beside flush Q	22	-8		-13
beside flush b other	25
beside flush pp other	10			-6
beside foam	-18			29
beside fog	14
beside fog b other	7
beside fog between	10
beside forget		17
beside forget N	16
beside forget b other	-12	10
beside forget b person	18
beside forget p person	-12	22
beside forget the	5	-7
beside fray	30	-5	-16	-21
beside fray pp other	30	-5	-16	-21
beside fre	24
beside fre it	11
beside fre pp nobody	18
beside fre pp other	20			-6
beside fre pp person	4
beside fre with	6
beside freeze	12
beside freeze p other	10
beside fur	-17	9		10
beside fur b other		11
beside get :	18		-20	-19
beside get G	-44	26	26	-11
beside get N	9	-19
beside get about		-6	22	-19
beside get all	27			-7
beside get an	-33	27		10
beside get another	19	-7
beside get b nobody	-15	57
beside get b other		60
beside get b person		27
beside get both	-25	-8	30	-15
beside get em	28	-6	-16
beside get enough			13
beside get glue	-29	-4	33	-8
beside get her	26
beside get his	13
beside get i other		7
beside get it	49
beside get it's	11
beside get its				24
beside get maybe	-19		23
beside get me		14
beside get my	20
beside get new		-5	-5	7
beside get no		13	-13
beside get on	21
beside get p nobody	-28	-32	18		28
beside get p person			38
beside get photos	25
beside get pin	-29		32
beside get plenty	-31		43
beside get s person		17
beside get some	-32	46	-14	-16
beside get that		-6	-5	10
beside get their	4
beside get them	34	-22	-17
beside get this	24	-8
beside get through	27	-7	-31
beside get to	12
beside get under	22		-11
beside get up				5
beside get water	12
beside give Q	28			-10
beside give b other		8
beside give b person	-9	-29	-16		14	15
beside give i other	13
beside give it	15	-26		5
beside give me	-7			-22	17
beside give p nobody	18
beside give p other	20
beside give p person	-5	-11
beside give s other	20			-4
beside give the	9
beside give us		-17	27
beside glue				8
beside glue Q	5
beside glue a				8
beside glue down	9
beside glue in				5
beside glue it	23
beside glue on						11
beside glue pp nobody	-12			21
beside glue pp person	-8			14
beside glue up	-10			24
beside go ,	-16		20
beside go Q		-13		8
beside go T	-6			14
beside go and	-22		29
beside go any	7
beside go around		16		-19
beside go but	22	-11		-18
beside go by	11
beside go down	13
beside go for	17
beside go from	13
beside go home	9
beside go i nobody	13
beside go into	-6		18	-15
beside go nowhere		-6	16	-11
beside go off	24
beside go out	24
beside go over	19
beside go p nobody				20
beside go p person				8
beside go round	-10	-5		18
beside go s other	10
beside go s person	6
beside go the	26
beside go through	-20			68
beside go to	26
beside go up	-4	6
beside go with	-13			22
beside gonna	5
beside gonna will person	4
beside gotta	6
beside gotta G	10
beside gotta glue	18
beside grab		14
beside grab Q	-6	14			6
beside grab a	-22	34
beside grab another		6
beside grab b other		13
beside grab b person	-10	26
beside grab it	16			-6
beside grab me	5
beside grab the	-9		-6	-9	15
beside grease	7
beside grind and	11
beside grind the	8
beside grout	-18			27
beside grout pp nobody	-28	-9		33
beside guess	-16	19
beside guess b other			7
beside guess b person	-15	23
beside hand	15
beside hang ,	-6	-12		36
beside hang G	21			-8
beside hang Q				32
beside hang T	-25		-13	21
beside hang a				5
beside hang all	-11			16
beside hang and	33
beside hang b nobody	13
beside hang b person				5
beside hang but	20			-8
beside hang by	28
beside hang i person	-12		19	-12
beside hang in	12
beside hang it's				14
beside hang pp nobody				10
beside hang pp other				30
beside hang pp person				11
beside hang s other	40			-19
beside hang that	-18			21
beside has glue	-11		19
beside has has nobody	-7		16
beside has has person		-7	31
beside has its	18
beside has no		7
beside has the	-5
beside has to	12
beside hate	6
beside hate s person	5
beside haul	6
beside have ,	-22		23
beside have :	27	-10	-21
beside have G	-9		25
beside have N	-6	18	-10
beside have Q			12
beside have about	-18		24
beside have all			5
beside have an	-19	-14	29	-7
beside have another	24
beside have b nobody			56
beside have b person			50
beside have her	13
beside have here	-10		-18		23
beside have i other	42
beside have i person	-21	13	17	-12
beside have in				-11
beside have it		9	-4
beside have let go	32		-13	-17
beside have maybe	7
beside have my	18
beside have on			10
beside have only			12
beside have pp nobody			-5	8
beside have pp other	10
beside have still	-44	16	29	-10
beside have their	8
beside have to	13
beside head ,		13		-14
beside head s other	-13	22
beside heave	6
beside heave pp other	6
beside help	17
beside help b other	18
beside hide	11
beside hide b other	12
beside hit s other	12
beside hit that				8
beside hold a	6
beside hold all	7
beside hold em	6
beside hold off	-13					19
beside hold pp other	12
beside hold pp person	7
beside hold s other	5
beside hold with	11
beside hook				5
beside hook pp other					5
beside hook pp person	-10			19
beside hose	15
beside hose it	18
beside hum	14
beside hum s other	15
beside i'll G	14
beside i'll pull			10
beside i'll screw	7
beside i'll splice	4
beside i'll will nobody	7
beside i've	-8		24
beside i've Q		-8	12
beside i've has nobody	14	-15		-4
beside i've has other	-15		24
beside i've no	-18	33	-41
beside inject					15
beside insert		7
beside insert b other	13
beside install ,	32			-20
beside install Q	-9	-4		28
beside install b person	10
beside install pp nobody	-8			24
beside insulate	-6			15
beside insulate pp other	11
beside insulate the	-13			20
beside is G	18
beside is N	19
beside is T	-13			21
beside is about	13
beside is all	32			-16
beside is already	22
beside is another	14
beside is at	12
beside is black		7
beside is brass	13
beside is cherry	-13	21	-10	-10
beside is down		-5	-5	24
beside is fine	-6	16
beside is flat	8
beside is for			5
beside is full	10
beside is glue	-9	-6		18
beside is good	13
beside is in		-9	5
beside is it	19
beside is loose	16
beside is maybe			6
beside is me	7
beside is more	9
beside is new	26			-5
beside is no	4
beside is not		10
beside is oak	-6		16
beside is off	4
beside is ok	26	-13		-7
beside is on				6
beside is only	25
beside is out	13
beside is out of square	9
beside is punky		10
beside is ready	23			-7
beside is screw		11
beside is short		14
beside is shot	27			-10
beside is soft	16
beside is spongy	14
beside is still	15
beside is the wrong		-8	10	-9
beside is up				33
beside is water	5
beside is wet	19
beside is with	9
beside isn't	17
beside isn't is other	17
beside it'll	-10		19
beside it'll will other	-10		19
beside jack		-10		9
beside jam	25
beside jam pp person	18			-7
beside join		-7	-8	13
beside keep			23
beside keep Q	-13	-6	25	-8
beside keep an	28		-7
beside keep b nobody	27
beside keep b person	5
beside keep pp nobody	-19		23	-5
beside keep pp person	-28	-8	36	-13
beside keep the	-5		23
beside kick						11
beside kick b other		11
beside kick i other	-20					25
beside kick out	-5	18
beside kill	16
beside kill pp person	15
beside kink pp other	4
beside knock b other	-19			17
beside knock b person	13
beside knock it	24
beside knock on	18
beside knock out	-6			13
beside knock pp other	8
beside know b person	8
beside know if	8
beside know s other	10
beside know the	11
beside label	23
beside lag	-4			12
beside lag pp other	-5			13
beside land Q	17		-7
beside land pp other			11	-9
beside land s other	16
beside lap	7
beside lap pp other	7
beside lay G	10
beside lay Q	-33	-7		40
beside lay b other		10		-30
beside lay b person	41			-19
beside lay down				13
beside lay i other	19
beside lay in		19		-31
beside lay on	7
beside lay out	32
beside lay pp other	28
beside lay pp person	-23			43
beside lay the				9
beside leak at	6
beside leak but	17
beside leak the	-22	-7		24
beside leak under	6
beside lean	6		7	-15
beside lean a	17
beside lean on			17	-16
beside lean pp person	5		10	-19
beside learn	14
beside leave ,		-20	16
beside leave :	-22	-27	47	-18
beside leave G	14
beside leave N	27	-12
beside leave Q	-19		58
beside leave a	5
beside leave about	-7		16
beside leave alone	10
beside leave and		22
beside leave b nobody	4
beside leave by	6
beside leave corner	15
beside leave em	5
beside leave for	23		-6
beside leave i other	14
beside leave i person		-6	10
beside leave in	23
beside leave leaning	7
beside leave leg	4
beside leave me			23	-18
beside leave my	4
beside leave on			5
beside leave pp nobody			30
beside leave s other	-5		24	-18
beside leave so		15	-8
beside leave that		14
beside leave the	11
beside leave with		-27	-6	18
beside let by	15
beside let in				21
beside let s other	6
beside let the	6
beside level ,	-10			21
beside level and	-15	22
beside level b nobody	-6	14
beside level b person	14
beside level now	24			-5
beside level pp other	-10			22
beside level pp person	23			-10
beside level the	26			-13
beside level to	17
beside level within	17
beside lift ,	9
beside lift Q	19
beside lift i other		6
beside lift pp person	9
beside like G	9
beside like N	12
beside like a	11
beside like b person				5
beside like it	8
beside like that		15	-6	-15
beside like the	6
beside lit	25			-5
beside lit b person	25			-5
beside live	16
beside live b person	17
beside load			15
beside look and	10
beside look at	11
beside look b person	20
beside look for	-14	20
beside look i person	-13	19
beside look pp person	12
beside look the	9
beside lose a	21
beside lose pp other	28
beside lose pp person	-12			27
beside lose the	8
beside love b person				14
beside lower	24
beside lower b other	24
beside lower than	16
beside lube	17
beside make G		8
beside make N	27
beside make Q		-16		21
beside make b other		12
beside make for	18
beside make i other	11
beside make i person	10
beside make it	-30	25		9
beside make new	26			-7
beside make pp other	-21			28
beside make pp person	14	-8
beside make s other	16
beside make that	-19	29
beside make up	17
beside mark b other	24
beside mark pp other	21
beside mark pp person	-13	20
beside mark the	-11	17
beside mask	5
beside match Q	-13	28	-5	-6
beside match i other	26	-19
beside match pp other	-8	17
beside match the	4
beside measure	7
beside measure Q	22
beside measure bp person	-11	18		-9
beside measure bpp other	7
beside measure i nobody	11
beside measure p nobody	34	-22
beside measure p person	13			-6
beside measure pp nobody	14
beside measure pp other	8
beside measure s nobody	11
beside measure s person	21
beside measure up	-14	18
beside meet	8
beside meet b other	8
beside meet s other	7
beside meg	9
beside melt	5
beside melt pp other	5
beside mill	4
beside miss		13
beside miss ,	6	5		-17
beside miss :	-24	27
beside miss G	6
beside miss Q		14
beside miss b other	-13	21
beside miss b person	-20	25
beside miss behind		4
beside miss by	-13	-14		21
beside miss from	-6	12
beside miss i nobody		24
beside miss i person	-11	29
beside miss in	6
beside miss its		4
beside miss on	12
beside miss pp nobody	31	-22
beside miss pp person	21
beside miss s other	8
beside miss strike	7
beside mitre		-16	-16	-12	23
beside mix	-6
beside mix Q				9
beside mix b other	-23	-7	15		12
beside mix pp nobody	-35	9		8
beside mix pp person	11
beside mount				8
beside mount ,	19	-5		-12
beside mount Q	-35		-11	38
beside mount pp other				7
beside mount pp person	-13		-4	21
beside move Q	31		-6
beside move a	9		-4	-13
beside move i person			21
beside move on	9
beside move p nobody				20
beside move p person				8
beside move pp nobody			28
beside move to	5
beside nail	-20			26
beside nail it	36			-28
beside nail off	-24	14		14
beside nail pp other	-17	13		12
beside nail pp person				9
beside need		26
beside need ,	16	-36	15
beside need :	-9	24
beside need G	-6	35
beside need N		8
beside need T	33	-11
beside need a		17
beside need an	9
beside need another	12
beside need b nobody		43
beside need b other		23
beside need b person		23
beside need for	-6		11
beside need her	30	-25
beside need i person	-16	33		-18
beside need its	19	-9
beside need more	-8	18
beside need new	-9	18
beside need paint	32	-25
beside need pp other			11	-12
beside need pp person	18	-10
beside need qt	-28	32
beside need s nobody	12
beside need silicone	5
beside need those	-22	26		-11
beside need to	28	-11
beside nick	7
beside nick pp person	10
beside nip		-18	19	-17
beside notch	13
beside notch b other	8
beside notch pp other	15
beside notice	6
beside oil on	-12	17
beside oil pp other	21			-5
beside open ,	-16		21
beside open G	9
beside open Q		-17		18
beside open a	18
beside open and	11
beside open b other	5
beside open for		-16	18	-16
beside open it	21
beside open pp nobody			17	-18
beside open pp other		-6		12
beside open s other	19
beside open to	8
beside open up	7
beside open with	-25		35	-14
beside order	-5	20			15
beside order ,		-4
beside order G	5
beside order N		17
beside order Q		21
beside order a					20
beside order and	12
beside order b nobody		14
beside order b other	-5	23
beside order b person	-12	23
beside order i nobody	-17	26		-6
beside order i person		16
beside order me	-5	12
beside order pp nobody	-18				38
beside order pp other	-11			-13	35
beside order pp person		-10			18
beside order the	-43	36		-14	31
beside other b nobody		32
beside other i nobody	-26	57		-16
beside other i person		11
beside other p nobody	-11	-9				16
beside other pp nobody	-9	-14		-15	38
beside other s nobody	35
beside owe	-13	38		-4
beside owe b other		5
beside owe b person		17
beside owe em	-21	28
beside owe it	26	-16
beside owe me	8
beside owe s person		11
beside owe the	8
beside owe them	-28	18	-15	-21	22
beside own b other		6		-8
beside pack				18
beside pack b other	-18	18
beside pack it	-9	8		4
beside pack pp nobody	-9			17
beside pack pp other		-10		12
beside pack pp person				14
beside pack the	13
beside pack with	15
beside paint ,	-7			15
beside paint G	17
beside paint Q	23
beside paint pp nobody	-11			16
beside paint pp person	19
beside paper	-18	15		7
beside paper pp other	-28	18	-11	12
beside pass ,	25
beside pass G	20
beside pass T	12
beside pass b other	32
beside pass b person	-16			25
beside pass pp other	29
beside patch ,	14
beside patch b nobody	23			-23
beside patch b person	19
beside patch by	9
beside patch in	17
beside patch it	-21	-25	13	19
beside patch pp other	11	-13
beside patch pp person	-11			21
beside patch that				10
beside patch the	8
beside patch with				-8
beside pay					19
beside pay for					7
beside peel back	16
beside peel i other	16
beside peel in	5
beside perish	-21	30	-4	-25
beside perish pp other	-21	30	-4	-25
beside phone	14
beside phone b other	7
beside phone the	5
beside pick		8			7
beside pick G	21
beside pick Q	-10	20		-12
beside pick b nobody		9
beside pick b other		17
beside pick b person	-22	40
beside pick i person	34	-14
beside pick it	10
beside pick me	-20	40
beside pick pp nobody	-21	-31			49
beside pick pp other		-29	-6	-5	27
beside pick pp person					15
beside pick the	11				-13
beside pick up	-9			-5	41
beside pin	-10			20
beside pin b other	11
beside pin pp other	-24	-8		29
beside place ,	14
beside place and	6
beside place the	-12			18
beside plan	27	-15		-5
beside plane	20
beside plane b other	13
beside plane b person	9
beside plane it	14
beside plane pp other	16
beside plane the	9
beside plate	-9	-14		20
beside plate pp other	-9	-14		20
beside plug				21
beside plug it	-27	-13		31
beside plug pp nobody				12
beside plug pp other				6
beside plug pp person	-8			21
beside plug with	20
beside plumb	11
beside plumb ,				9
beside plumb b other	30
beside plumb both	13
beside plumb pp other				7
beside point Q	15
beside point b other	19
beside point the	14
beside pok	21			-4
beside polish	11
beside polish pp other	8
beside polish the	10
beside pop	11
beside pop b other	10
beside pop the	8
beside pour ,	6	-12	-8	9
beside pour G	-17	11		9
beside pour Q				17
beside pour T			-7	13
beside pour b other				8
beside pour b person	-15	18
beside pour pp other				6
beside pour pp person	6
beside pour the	13
beside presse	11	-5
beside prime ,	-4	11	-14
beside prime Q	17	-5
beside prime b nobody		13
beside prime b other	10
beside prime b person	19
beside prime both	23			-5
beside prime it	-6	19
beside prime pp nobody	32			-4
beside prime pp other				4
beside prime pp person	-4			11
beside prime the	-21			21
beside promise	15
beside prop	6
beside prop b other	13
beside prop pp other	6	-11
beside pull ,		-18		17
beside pull G	22	-11		-8
beside pull Q	5
beside pull i other	11
beside pull it	29
beside pull pp nobody	29
beside pump	15			-4
beside purge	20			-5
beside put				17
beside put Q	-10			10
beside put a	-8			15
beside put all	-6	-7		14
beside put an	-20			18
beside put back	39			-12
beside put bpp nobody	-7			37
beside put bpp other	-8			11
beside put bpp person				9
beside put down	-8	21
beside put i other	37			-14
beside put i person	23			-33
beside put in	-34			48
beside put it	-9	-15		11		9
beside put my	32			-10
beside put new	-5	-28		30
beside put on	-26			33
beside put out	14
beside put screw	22
beside put tape	39			-21
beside put that	4
beside put them	18			-5
beside put with	5	-10		6
beside quit	15
beside quit bpp other	15
beside quote	24
beside quote b other	21
beside quote for	19	-6
beside rack	12
beside rack ,	9
beside rack pp other	12
beside raise	27
beside raise b other	25			-6
beside raise it	10
beside raise the	23			-10
beside rake	-5			5	5
beside rate Q				5
beside rate for	16
beside rate pp nobody	11
beside reach				8
beside reach b person				14
beside read	12
beside read Q	14
beside read bpp other	14
beside read i person	10
beside read s other	7
beside rebuild	-15			32
beside rebuild b person	-6			14
beside rebuild pp other				16
beside rebuild the	-6			14
beside recaulk		-17	13	-9
beside receive	-30		26	-11
beside recess	19
beside reckon		19
beside reckon Q		18	-17	-19
beside reckon b person	-5	20	-15	-10
beside reckon pp person	26	-8
beside reckon s person	-12				19
beside reckon the	8
beside recoat		-12	-9	13
beside recut	19
beside recut bpp person	9
beside redo	-8	4		12
beside redo G	-9	19		-18
beside redo b nobody	-8	19		-18
beside redo b other	29
beside redo in	-8	-12		23
beside redo it	15
beside redo p other		-26	-14	11
beside redo that	-18	23
beside redo the	25			-13
beside refit	-5	-18		17
beside refix	-20	-13	-10	27
beside reglue	27	-12		-14
beside rehang it				6
beside rehang pp nobody				8
beside rehang pp other		-8
beside rehang with	-14	10		9
beside rekey				7
beside rekey pp nobody	-6			10
beside relay				12
beside relay Q	-17			20
beside relay pp other	34			-21
beside remake it	-10			16
beside remind	7
beside remind b other	7
beside rent pp person	13
beside rent the	8
beside reorder	-16	24		-8
beside reorder Q	-5	9
beside reorder b nobody	-27	32		-11
beside repair	-19			26
beside repair ,	33			-17
beside repair b other	-34			32
beside repair pp other	33			-17
beside repair s other				-4		20
beside replace	-10			25
beside replace ,	32			-26
beside replace G	-16			11		19
beside replace Q		9	-14
beside replace i other		5		-8
beside replace pp nobody	-13			28
beside replace pp other	-13			21
beside replace pp person			-7	6
beside replace the	-19			34
beside replace with	-6	7
beside repoint	9
beside require	-34	40		-30
beside require pp other	-35	29	11	-22
beside reseat		-22		-18	23
beside reset				7
beside reset Q	8
beside reset bpp nobody		-8		8
beside reset bpp person	-9			15
beside reset it	-12	-7		26
beside reset the	10
beside return						17
beside return Q			-23	-7		16
beside return b other	22
beside return pp nobody	-39	-10	-25	-16		49
beside return pp other	-36	-16	27	18
beside return the	-15	-19		-18		29
beside return with	-19	18	9	-18
beside reverse	15
beside rip	7
beside rip a		6
beside rip about	18
beside rip b other	26
beside rip b person			6
beside rip by	5
beside rip pp other	21
beside rob	-9			21
beside rob Q	-14			24
beside rock		-7	-6	7
beside rock pp other		-8	-7	11
beside rod	26			-8
beside rod pp other	16
beside roll G	24			-5
beside roll Q	5
beside roll a	11
beside roll b other			16
beside roll b person		-6		9
beside roll i other	11
beside roll it	20
beside roll on				6
beside roll out	-5	-9	-10	17
beside roll pp nobody	6
beside roll pp person	6
beside roll the				8
beside roll up	7
beside rot b other	4
beside rot in	6
beside rough	30			-4
beside rough in	31			-9
beside rough pp other	22
beside rough pp person	18
beside round	9
beside round b person	9
beside round with	9
beside rub	12
beside rub i other	5
beside rub pp other	7
beside rub s other	5
beside run ,	14
beside run :	-35	17	-29	-20	23
beside run G	-19			28
beside run N	14
beside run Q		-6		32
beside run about	20
beside run and	18
beside run at	12
beside run back	-11	-15	-6	-11		22
beside run bp nobody	30			-5
beside run but	13
beside run by	-11	18		-13
beside run clear	6
beside run down	7
beside run from	8
beside run i nobody	16
beside run i person		-18		-11		19
beside run in				5
beside run into	5
beside run now	15
beside run off	11
beside run on				11
beside run out		9		-7
beside run outta	4
beside run p nobody				11
beside run s nobody	10
beside run s other	19
beside run s person	10
beside run short	-22	32	-5	-16
beside run the	26
beside run through	-39	-27	-7	42
beside run to	-17			24
beside run up	19			-9
beside run water	16
beside rust	23
beside rust b other	22
beside sag	11
beside sag Q	4
beside sag between	11
beside sag i other	5
beside sag in	5
beside sag to	4
beside sand and		4
beside sand back	25	-12
beside sand i other	18
beside sand pp other	-14	19
beside sand pp person	20
beside sand the						16
beside save			18
beside save b other	16
beside save pp person	-14		29	-12
beside save the			11
beside say G	13
beside say T	8
beside say a	14
beside say between	8
beside say i other	16
beside say pp nobody	12
beside say pp other	11
beside say so	-11	17		-6
beside say there's	20
beside scab	-8	-5		15
beside scorch	14
beside scorch pp other	14
beside scrape	14
beside scrape it	10
beside scrape off	11
beside scrape pp other	27		-12
beside scratch by	5
beside scratch near	12
beside scratch pp other	24
beside scratch the			9
beside screw				11
beside screw Q		-17	-8	16
beside screw a	-10			19
beside screw down	-26	-5		36
beside screw it				7
beside screw off	-6		18
beside screw pp nobody	-9			17
beside screw pp person	-21			35
beside screw the	10
beside screw to		7		-19
beside scribe		13
beside scribe a		15		-9
beside scribe b other		9
beside scribe b person		17		-8
beside scribe pp nobody	18			-9
beside scribe pp other	7
beside scribe the	14
beside scribe to	14
beside scuff	23
beside scuff pp other	23
beside seal b person	7
beside seal it	-8	-5		16
beside seal on	20			-7
beside seal pp nobody				8
beside seal pp other				5
beside seal the	5
beside seal with	-21			33
beside see G	8
beside see Q	15
beside see a	6
beside see i person	-4	15
beside see it	12
beside see p person	17
beside see pp nobody	14
beside see pp other			11
beside see s other	7
beside see the	7
beside seize	23			-7
beside seize pp other	23			-7
beside send						5
beside send Q	-37	6	12	-19		20
beside send a	11			-10
beside send another	-22	20			11
beside send b nobody			7
beside send b other		13
beside send b person	5
beside send em	20	-12
beside send i other	-35	44
beside send i person		14
beside send it	19
beside send me	-14		14
beside send pp nobody	-33		-28	-21	-18	35
beside send pp other	-24		30
beside send pp person				-18		10
beside send the	4
beside send to	6
beside set ,		-15		7
beside set G		-5	19	-22
beside set Q	-5			28
beside set a	-5			21
beside set both	20			-10
beside set bpp nobody	-8		10
beside set bpp person				5
beside set in	17
beside set it	9
beside set that	25			-9
beside set them		12		-20
beside set to	34		-5	-20
beside set with	-9	-9		19
beside settle	-18	-9	-4		21
beside settle pp other	-12	-8		19
beside shave	22
beside shave b other	22	-9
beside shift	5
beside shim pp other				13
beside shim pp person	9
beside shim the	26
beside shin a	18			-7
beside shin pp person	8
beside ship	-5		9	-9
beside ship i person	-15	10			18
beside ship pp person	-16		29
beside shoot	23
beside shoot b other	22
beside shoot it	13
beside shore	-40	16		22
beside shore it	-26	20
beside short	14	-6
beside should	-6			17
beside should G	10
beside should will other	-12			20
beside should will person	4
beside shove	12
beside show Q	6
beside show b other	18
beside show i other	14
beside show me	16
beside show pp other			15
beside show pp person	8
beside show s other		6
beside show so	15
beside show the	-16	-7	22	-14
beside show up		10
beside shred	16
beside shred pp other	16
beside shut	17
beside shut bpp other	16
beside sign	-6		16
beside sign pp person	19
beside sign the	-15		22
beside silicone				13
beside silicone pp other	10
beside sister Q	26			-17
beside sister a	-10			25
beside sister b nobody	-16	26
beside sister b other	-12	-14	18
beside sister b person	25			-29
beside sister pp nobody	-9			16
beside sister pp other	6	-16
beside sister pp person	14
beside sister the	35			-30
beside sit at	25
beside sit back	15
beside sit down	-8	-18	19	-20
beside sit flat	-14	24
beside sit i other	8
beside sit i person	8
beside sit in	20
beside sit on	34
beside size	12
beside size Q	16
beside size b other	10
beside skim pp other	5
beside skim pp person	-9			16
beside skin	15
beside skin over	7
beside skin pp other	12
beside slid				10
beside slid b person				10
beside slip	9	-14
beside slip a		-5
beside slit	22
beside slit b person	22
beside smooth	6			-6
beside smooth b other	6			-6
beside snake	12
beside snake Q	9
beside snake it	8
beside snake pp nobody	9
beside snake pp person	6
beside snap pp other				9
beside snap the	24
beside snug	28
beside snug it	5
beside snug pp nobody	30			-21
beside soak				7
beside soak it	7
beside soak pp other		-10		11
beside soak pp person	6
beside soap	12
beside sold	11
beside sold b person	11
beside sold me	5
beside solder	-13			5	18
beside sort the			9
beside sound	17
beside sound b other	16
beside space	8
beside space i other	9
beside spend				13
beside spend Q	-8	-10	-10	23	-7
beside spend b person	-8	-10	-10	23	-7
beside spend pp person	11
beside spend the	15
beside spill	14
beside spin	30
beside splice				8
beside splice it	-7			13
beside splice pp other				5
beside splice pp person	-8			13
beside split ,	-16	24		-9
beside split bpp person				13
beside split on	12
beside split right	25	-9
beside split the	5
beside spot	19
beside spray	35
beside spray Q	26			-16
beside spray T	5
beside spray b other	8
beside spray both	29			-16
beside spray pp nobody	24			-14
beside spray pp other	30
beside squeak	6
beside squeak b other	25
beside squeak by	-4			12
beside squeak s other				9
beside stack	-8		12
beside stack pp other			14	-20
beside stack pp person	-23			21
beside stack the	10		8	-25
beside stagger	-17			21
beside stagger pp other	-18			22
beside stain				4
beside stain G	13
beside stain pp nobody		13		-17
beside stain pp other				14
beside stand Q		14
beside stand b other	12
beside stand b person	-14	9		8
beside stand i person					9
beside stand in	12
beside stand on					17
beside stand s other	13
beside stand there	29	-19	-5	-15
beside staple	11	8	-7	-18
beside staple pp other	11	8	-7	-18
beside start	20
beside start T	25	-16
beside start b other	27	-6
beside start b person	11
beside start i other	10
beside start on	6
beside start s other	-7				16
beside stay	7
beside stay b other	9
beside stay i other			5
beside stay in	9
beside stay off	9
beside stay on	16			-8
beside stay up	14
beside steam	16
beside stick Q	-19			21
beside stick a				6
beside stick b other			7	-12
beside stick b person	20			-10
beside stick behind	14
beside stick i other	11
beside stick in	29	-9		-11
beside stick it	-15		20
beside stick out	6
beside stick pp other				6
beside stick pp person	-13			31
beside stick the	6
beside stick up	7
beside stop at	7
beside stop b other		17
beside stop pp other	16
beside straighten	-6	6			12
beside straighten b other	-17	25
beside straighten it	-18	22
beside straighten pp nobody	7
beside straighten pp other	-10	-20	-20	-22	25
beside straighten that		9
beside straighten with	8
beside strap				7
beside strap pp other	32			-14
beside stretch	20
beside stretch pp other	18
beside strip		4
beside strip ,	19			-20
beside strip Q	17	-12
beside strip and	20
beside strip b nobody		6
beside strip b person	-22	24
beside strip it		9		-5
beside strip of		12
beside strip pp nobody	27			-11
beside strip pp other	7			-13
beside strip pp person	23
beside strip the	33
beside strung	8
beside strung b person	8
beside stuff ,	15	-22	-20	6
beside stuff Q	-15			15
beside stuff a	4
beside stuff and		5		-26	8
beside stuff it	-31	28
beside stuff pp other				12
beside stuff pp person	4
beside stuff the				5
beside stuff with	18
beside supply Q	15	-27	12	-10
beside supply b nobody	22	-4
beside supply b other			9
beside swap				10
beside swap ,	-9	-22		26
beside swap G	35			-27
beside swap Q	15		-27
beside swap and	8		4	-19
beside swap b nobody				-26
beside swap b other		8		-29
beside swap b person		21		-30
beside swap both	-5	-6		10
beside swap for	-8	17
beside swap in	-38			32
beside swap it	-32	5	23
beside swap out	-21			26
beside swap pp nobody			-14	26
beside swap pp other	-26	-7		32	4
beside swap pp person				19
beside swap that	-20	20
beside swap the				18
beside swap those	7	6		-18
beside swear	6
beside sweat	-24	-14	16		13
beside sweat b other	-25	-18	20
beside sweep	22
beside swell	7
beside swing		4
beside swing b other	10
beside swing b person		18		-4
beside swing by	-14	26		-15
beside swing s other	10
beside swing the	8
beside switch	14
beside switch pp person	14
beside tack				9
beside tack pp person		-10		11
beside take G	12
beside take N	-16	14
beside take Q	-12			36
beside take a	24
beside take b nobody	22	-41	8	-14
beside take back	-50	-26		-47		52
beside take care	-23			28
beside take down	15
beside take i other	23	-9
beside take i person			5			11
beside take it	29
beside take me	10
beside take my	15
beside take out	52	-6		-10
beside take p nobody	-33	-16		-22		60
beside take p other				36
beside take p person				-11		33
beside take s other	12			-5
beside take that	-27					28
beside take the				-7		24
beside take them	-6		17
beside talk to	5
beside talk with	6
beside tank	8
beside tap	22
beside tap the	16
beside tape ,				12
beside tape all				9
beside tape it	8
beside tape pp nobody				10
beside tape pp person	22
beside tape the	7
beside tear	6
beside tear ,	7
beside tear b other	7
beside tear near	15
beside tear out	27			-10
beside tell b nobody	13
beside tell b person				5
beside tell me		-10		10
beside tell pp other				11
beside tell s other	10
beside tell the	6
beside tell you		9
beside temper	-5	15
beside temper pp other	-5	15
beside template	14
beside template pp other	14
beside template the	9
beside test	19
beside test Q	18
beside test all	26			-16
beside test at	8
beside test b other	8
beside test b person			9
beside test pp nobody	13
beside test pp other	21
beside test with	14
beside text	14
beside text b other	10
beside text b person	7
beside they've	-19	-6	23	-12
beside they've has other	-19	-6	23	-12
beside thin				6
beside think Q			4
beside think about	-14		20
beside think b other	4
beside think the	14
beside thread	-8			22
beside throw Q	-14	24
beside throw b other	-11	34
beside throw i other	15
beside throw p other	17	-18
beside throw p person	-20	-7		37
beside throw the	12
beside tidy	9
beside tidy b other	9
beside tie b other				9
beside tie it	13
beside tie pp other	18
beside tie pp person				7
beside tighten	26
beside tighten pp nobody	8
beside tighten pp other	14
beside tighten pp person	21
beside tighten the	24
beside tile	16
beside tile pp other	17
beside tin b other				5
beside top ,	10
beside top G	22
beside top and	18
beside top b nobody	16
beside top hinge	-18	26
beside top of				13
beside top out	22
beside top pp person	19
beside top s other	20
beside top to		10
beside torque	16
beside torque pp other	17
beside torque to	19
beside touch i other	5
beside touch pp other	-13	19		-7
beside touch that	7
beside touch up			6
beside trace	19
beside trace it	4
beside trace pp nobody	9
beside treat		16
beside treat pp other		20
beside trim	-6			24
beside trim out	-36			45
beside trim pp other	-16			30
beside trim pp person	19
beside trip	5
beside try a	-29	9	21
beside try b nobody	-11	-8	22	-16
beside try b other		12
beside try pp person	10	-15	-23	10
beside try the	23	-11
beside tuck	8
beside tuck pp other	7
beside turn Q	-17	-19		26
beside turn b nobody	22	-9
beside turn b person	6
beside turn out	-7	15
beside turn pp nobody	18
beside turn pp other	6	-13	16	-30
beside turn s other	-9	15
beside turn that	5
beside turn the	21
beside turn up		-11	23	-32
beside undefined has nobody	-4	-17	27	-4
beside undefined has person			30
beside undercut	21
beside unlabel	16
beside unlabel pp other	16
beside unsand	-5	13		-15
beside unsand pp other	-5	13		-15
beside update	9
beside use				14
beside use ,	-9		40	-28
beside use :	-20	-23	-16	40
beside use G	12
beside use N	-28			32
beside use Q				25
beside use a	-19			29
beside use about		-6	-4	23
beside use and	-24	-24	30	-14
beside use b nobody	-26			49
beside use b other				-17
beside use b person	-12
beside use i person	19	-4		-6
beside use pp nobody				28
beside use pp other				23
beside use pp person				25
beside use up	-31	5		23
beside vacuum	26
beside vacuum pp other	21
beside vent	-6			9
beside wait T	18	-8
beside wait b nobody		8
beside wait b other		8
beside wait for		13
beside wait i nobody		8
beside wait i other	-22	18	11
beside wait i person					14
beside wait on	-15	10
beside wait s other	19
beside wait till	-9		18
beside wait until	10
beside walk	4
beside walk -	6
beside walk G	-8		17
beside walk b nobody	14
beside walk b person	13
beside walk in	6
beside walk it	15
beside walk on	5
beside walk pp nobody	-9			-9	20
beside walk pp other	14
beside walk pp person	19
beside walk the	15
beside walk with	25	-16		-11
beside want :	-30	38	-13	-13
beside want G		21		-6
beside want T	5
beside want all	-17	21		-9
beside want an	-12	12	5	-16
beside want another	14
beside want anything	13
beside want at	-7	13
beside want b nobody	9
beside want b other	33	-6
beside want b person		11
beside want black	7
beside want her	-8	-25	-4	23
beside want i person	-18	27
beside want it	23
beside want new		8
beside want paint	-12	16
beside want pictures	10
beside want pp other	-10		12
beside want pp person	5		8	-5
beside want s nobody	-7	20		-11
beside want s person	17
beside want the	21
beside want to	15
beside want water	19	-8
beside warp	16
beside warp pp other	16
beside wash b other	11
beside wash pp other	-10	-18	-6	26
beside wash pp person	10
beside wash the				7
beside wash with	14
beside wasn't		13		-7
beside wasn't is other		13		-7
beside watch			10
beside watch b other		-5	12
beside we'll	14
beside we'll will other	14
beside we've	-14	-5	24	-8
beside we've has other	-10		19	-7
beside weep	24
beside weep b other	19	-10
beside weep i other	20
beside weigh in	-15		-5	16
beside weigh pp other				12
beside weigh s other	23			-12
beside weld				5
beside weld pp other	11
beside were	16
beside were Q	6			-14
beside were black	18			-12
beside were is other	43
beside were is person		10
beside whip	13
beside whip pp other	13
beside will glue	-5	13
beside wipe b person	8
beside wipe pp other	17
beside wipe pp person	19
beside wipe the	13
beside wire	19
beside wire ,	18
beside wire pp other	18
beside wobble	18
beside wobble ,	21
beside wobble s other	18
beside won't catch	5
beside work	6
beside work bp nobody	30			-5
beside work bpp nobody				24
beside work from	12			-7
beside work i nobody	28
beside work p nobody		-5		30
beside work pp nobody				12
beside work s person	8
beside wrap G	-4			13
beside wrap Q	32			-22
beside wrap b other	23
beside wrap in				9
beside wrap it	-37	-7	5	30
beside wrap on	22			-11
beside wrap pp other				6
beside wrap pp person	-29			37
beside wrap the				9
beside wrap up	5
beside wrap with			15	-10
beside wrote	13
beside wrote b person	13
bound atLeast	16
bound atMost	23
bound over	14
bound under	22
code	-71	28		41
count after bought far	-6					6
count after bought here	-9		-25	5	10
count after bought sentence	-8				19
count after have far	-7	9
count after have here			19	-19
count after need far	-5		14	-10
count after need here		20
count after need sentence	-6	22
count after none far		5
count after none here		8
count after returned far	-37	17	11
count after returned sentence	-30		-35	-13	37	11
count after used far		12
count after used here		-16		12
count after used sentence	-14
count before it ate						15
count before it back	-15					25
count before it bought	-33				29
count before it came	-30		35
count before it have	-16		58
count before it lacks	-14	47
count before it need		30
count before it used				19
count behind it ate	9	-16
count behind it back	-24		12			23
count behind it bought	-50			-26	12	34
count behind it came		-10
count behind it have	-5		47
count behind it lacks			-12	9
count behind it need			5
count behind it used				24
count beside add	-11			19
count beside are	-53			62
count beside arrive	-11		22	-33
count beside ask	31	-13		-9
count beside back	28	-5		-23
count beside balance	-33		20	7	-10
count beside bend	-15	26	-24
count beside blow	30
count beside bolt	-13	-6		26
count beside box	-22	25
count beside break	-25	9	23
count beside build		-13		17
count beside burn	-37		18	19
count beside buy	-18	26
count beside buy b nobody		17
count beside buy b other		9		-5	8
count beside buy b person	-10				19
count beside buy i person		18	-16	-23	-12
count beside buy pp nobody	-19				40
count beside buy pp other	-17				9
count beside buy pp person	-8		-13	-15	19
count beside call		4
count beside can	8	11	-6	-28
count beside change	-30	-5		52
count beside check	-18		24	-34
count beside chip	31	-10		-7
count beside clean	7	-18		5
count beside clear	-6	-15	19
count beside close	-5			10
count beside come	-19		19	-11
count beside count		-8	20	-17
count beside cover		18		-19
count beside crack	-9	18		-22
count beside cut	8
count beside date	14
count beside deliver	-26	-22	38	-39
count beside dial	19
count beside dig		9		-5
count beside do	-12		-10	24
count beside draw		-9		6
count beside drill	6
count beside drip	18			-14
count beside drive	-43			22
count beside drop			16	-12
count beside dry	33	-11		-16
count beside eat	-14	-20	-12	30
count beside figure	-24	20	9	-12
count beside find	-12	6	10
count beside finish		-33		14
count beside fit	-23		-16	25
count beside fix			-18	12
count beside flip	-8	10	8	-9
count beside flush	24			-9
count beside give	-25	-7		-39	11	32
count beside glue	-13	-17		26
count beside go	-9			13
count beside grab	5				7
count beside hang	-16			39
count beside has			-22
count beside have b nobody	-27		47
count beside have b other	28		-12	-5
count beside have b person	-7		24
count beside have pp nobody	-12	-7	-14	23
count beside have pp other	9	-28	-16	14
count beside have pp person	-7			14
count beside head	-22	24
count beside hold	-19	13				6
count beside i've	-16	-12	25	-10
count beside install		-9	-7	17
count beside keep	-16	-18	26	-17
count beside land	29		-15	-15
count beside lay	-7	-13	-10	20
count beside leave	-26	-23	59	-19
count beside level	-40	19	-6	29
count beside lift	21
count beside like		5
count beside lower	27	-8		-14
count beside make		18		-7
count beside measure	27			-4
count beside measure b other			15	-16
count beside measure bp other		-5	7
count beside measure bp person	-49	29	13	-25	21
count beside measure bpp person	5
count beside measure i other	23
count beside measure i person		6
count beside measure p other	-6	-8	17
count beside measure pp other		-4	13
count beside measure pp person	12			-6
count beside miss		30		-17
count beside mount	-11		-17	24
count beside move	23	-32	8	-25
count beside move b other	6	7	-5	-7
count beside move b person		-6	-13	12
count beside move i other	-19	-19	5	16
count beside move p nobody	7	-4
count beside move p other	-20			12
count beside move p person	-22	-10		29
count beside move pp nobody	-48	-17	55	-22
count beside move pp other	-32	-8	52	-16
count beside move pp person			10	-24
count beside nail	-14	20	-28
count beside need		32
count beside need b nobody		35
count beside need b other		23
count beside need b person		29
count beside need pp other	-36	6	28	-17
count beside need pp person		-15	22	-16
count beside need s nobody	32	-18
count beside need s other	32			-10
count beside need s person	6
count beside nothing	-14
count beside open	-11	-29	38
count beside order	-5	14		-12	14
count beside other b nobody	-7	36
count beside other b other		38
count beside other b person		15		-7
count beside other i nobody	-32	50		-21
count beside other i other				-26
count beside other i person	-21	32	-6
count beside other p nobody	-24			-17	7	30
count beside other p other				4
count beside other p person		-27
count beside other pp nobody	-44		7	-37	21	27
count beside other pp other	12			-6
count beside other pp person	-8	-43		-20		24
count beside other s nobody	28			-5
count beside other s other	16			-25
count beside other s person		13	-10	-12
count beside pack				5
count beside paint	18
count beside pass	40	-5		-21
count beside patch	24			-16
count beside peel				7
count beside pick		11		-16	14
count beside plumb	26			-13
count beside point	26
count beside pour	24	-9		-33
count beside prime	21			-26
count beside pull	29
count beside put	-32			48
count beside raise	30	-5		-17
count beside rate	7			-9
count beside read	22
count beside rebuild	-29	-4		36
count beside reckon	-8	24	-27	-19
count beside redo	-5	-22	-22	18
count beside rehang	-20	5		17
count beside reorder	-31	27	-8	-15	8
count beside replace	-19	9	-14	15
count beside require	-23	34	-28	-24
count beside reset	9	-23
count beside return	6	-24	-19	-12		18
count beside return b nobody	26	-9
count beside rip	11	-13
count beside roll	18			-11
count beside rough	34	-6		-19
count beside run	-5
count beside sag	22
count beside sand		6		-22
count beside say b other	-7	12		-9
count beside say b person	-20	13	10
count beside say i person	-6		-16	8
count beside say pp other	33
count beside say pp person		11		-32
count beside say s other	9
count beside say s person	-16	21
count beside screw	-36	5	-7	36
count beside scuff	24	-11		-15
count beside see	7
count beside see b other	-10		18	-17
count beside see b person	18
count beside send	-16			-37		40
count beside set	-15			28
count beside shim	-6	-4		19
count beside show	-7	-13	20	-15
count beside sister			10	-16
count beside sit	7	-21	13	-31
count beside split	-21	16	16	-29
count beside spray	45			-29
count beside square			8
count beside stand		-4		8
count beside start	35	-22
count beside stay	-11	-4	22	-22
count beside stick	-36	30		9
count beside stop	-5	14
count beside strip	43			-42
count beside stuff	-21	38	-13		-6
count beside take	-13	-13				19
count beside tear	28			-20
count beside tell	-6	24	-15	-25
count beside test	35
count beside think	-13		21
count beside throw	-21	21	-19
count beside tighten	26			-20
count beside top	7
count beside trim	-21	-17	-9	28
count beside turn	31		-4
count beside undefined has other			-27
count beside undefined has person	-12		21
count beside undefined is other	-10			11
count beside undefined is person		16	-6	-30
count beside undefined will other	-14			13
count beside undefined will person	15
count beside use	-16			14
count beside use b person	-6	7
count beside use pp nobody	-31		10	21
count beside use pp other	-26			26
count beside vacuum	27	-5	-10	-15
count beside wait	-44	40	16	-27
count beside walk		-28		-36	18
count beside want	4
count beside were		10		-30
count beside work b nobody			7	-30
count beside work b other	-17	9
count beside work b person	-17			23
count beside work bp other	-16	-29	-14	8	22
count beside work bp person	-50	14		25		14
count beside work bpp nobody				39
count beside work bpp other	-7			9
count beside work bpp person	-11	-10		31
count beside work i person	-8		17	-23
count beside work p nobody	-35			33
count beside work p other	24	-19	-12	-6
count beside work p person	-5	6
count beside work pp nobody				31
count beside work pp other				10
count beside work pp person				7
count beside work s other		10
count beside work s person	16	-10
count beside wrap	9
count buy imperative behind		15
count buy modal behind	-6	15
count buy past before	-23	-18	-21	23	7
count buy past behind	-10	-16	-5		40
count buy present behind	-45	17	-7	-18	23
count cue ate		-11				19
count cue back	-18					55
count cue bought	-39			-9	55
count cue came	-6	-9	11
count cue have	-13		75
count cue lacks	-5	34
count cue need		49
count cue used				45
count flawed	11
count have owed behind	32		-15	-12
count have past behind			-32	23
count have present before	10			-5
count have present behind			29
count kept	-26		58
count left 
	-15	22	-29
count left #		-42		8
count left &		-25	-15	19
count left (	-35			31
count left +	-12	24
count left ,	-24			7
count left -		7		-9
count left :	-33		13	29
count left ;	-15	23		-14
count left @	25
count left G				14
count left N	10	5		-21
count left Q		10		-11
count left T	-25	-14	32		4
count left about	-25	17
count left after	-8	-14		17
count left all		-13		32
count left also		23	-17	-35
count left and	-9	23
count left are	15			-23
count left around	40	-9		-17
count left at	73
count left back	-6	-26		-19		30
count left be	27
count left because	39	-22		-8
count left between	35	-5		-14
count left blow	19
count left break	-11	12	-13	7
count left bring	-11	20
count left but	28	-13		-12
count left buy	-45	18			18
count left by	17			-42
count left ceiling	-7			15
count left change	-26			34
count left clip	-39	25	20	-28
count left come		-23	12
count left count			7	-18
count left cover	5
count left cut	-9
count left date	14
count left dig	15
count left do				9
count left down	-16		8
count left drill	25			-15
count left drip	12
count left drive	-27			33
count left em	4	-14	16	-23
count left every	61	-18		-38
count left except	-7		12	-17
count left figure	-9	17	-4
count left find	17	-11
count left finish		-13	16	-10
count left for		8		-24
count left from	12
count left get	-22	16
count left glue	-15	9		8
count left go		-7
count left grab					16
count left hang	-20	-9		38
count left has	-11	14	-10
count left have	-8		27
count left hold	-10	25
count left i'm	-29	40		-30
count left in		-18	-18	36
count left install	-12	-6		23
count left is			23
count left it's	-5		5
count left just	-6	-26	-19	17
count left last	-10		24
count left lay	-17			22
count left least	9
count left leave	-22		18
count left like	-7			8
count left loose	41	-16	-4	-26
count left make	8	-11		5
count left maybe	-26	-11	45
count left me	-36	34
count left miss		10
count left move	25		-12
count left need		25
count left no	-9	19		-5
count left now		-28		14
count left of	25
count left off	9			-15		5
count left on		-6		19
count left one's	10
count left only	4		8	-16
count left open		-20	-22	9
count left order	-5	16
count left other	-5		10
count left out		-8		15
count left paint	26			-10
count left past	27
count left patch	16
count left pick		4		-14
count left plus			5	-5
count left pull	24	-18		-22		16
count left put	-26			23
count left rate	6			-10
count left read	19
count left replace	-12	18	-10
count left reset	8
count left return	21	-22	-17
count left run	6	-4
count left sand	-16	10	12
count left say	11
count left screw		-22		9
count left see	14
count left send	-37		13	-16		24
count left set	-10			33
count left short	-9	40
count left sister	20			-12
count left so	-64	66
count left stick	-24	8	-12	18
count left still	-7	13		-20
count left swap				13
count left take	-21		-35	16	10
count left temp	12
count left that's	-55	5		54
count left them		7		-19
count left then	24
count left there	18	-23
count left there's	-9		40
count left those		-9
count left though	-32	-22	-13	16	15	18
count left through	18		-7
count left throw	-31	24	-21
count left to	25			-9
count left under	39
count left up	-42	6	-10	16
count left use	-8			33
count left wall	13			-10
count left with	-62			58
count list have	-34		41	-35
count list need	-32	52	-14	-33
count measure imperative behind	33	-19
count measure owed behind	-16	-12	18
count measure past before			14	-11
count measure past behind				-13
count measure present before			15	-32
count measure present behind					10
count more	-8	25		-4
count move imperative behind	37	-8	-7
count move modal behind	31			-21
count move owed behind	29	-7
count move past before			15	-17
count move past behind	-20		25
count move present behind	-13	10	6
count name flawed	-11
count named before finish	-10			-4
count named before surface	21
count named before tool		18		-23
count named before word	9
count named before work				-6
count named here area	7	-14
count named here defect	52		-14
count named here finish	-27	35
count named here material	-66			25
count named here part	-96			19
count named here role	7	14	-23	-15
count named here surface	21
count named here tool	-59	37
count nameless	19			-5
count need modal behind	-7	26
count need owed before	18		-21	-19
count need owed behind		6
count need past before	-20	14
count need present behind	-15	33		-20
count not ahead	-16	35
count null copula before		18	-12	-7
count null modal before	-18	20	-16
count null modal behind		29
count null none no	-16
count null owed behind	13
count null present behind		-9	10
count other copula before	-10
count other imperative behind	-26	73
count other modal before				-16
count other owed before	-22	16	-15	11
count other owed behind	-7		17	-8
count other past behind	-17	-22
count other present before	-4	16		-19
count other present behind		13
count pointing	-35			33
count right 
		17
count right #	-39	57
count right &	-14	-31	-11	38
count right (	-40	32		-36	16
count right )	-24	-5		20
count right +		10		4
count right -		7		-26
count right .	-11
count right /	-28	17		16
count right :	38	-26	-14	-16
count right ;	-32		31
count right @	-32	4		9	14
count right G	-16	-8		33
count right Q	-18
count right T	21			-10
count right a		25		-17
count right above	23			-11
count right across	28			-8
count right after	45	-6		-26
count right all	-56		32	31
count right already	4	-8	12	-27
count right also				-7
count right and	-30			13
count right are	-28			41
count right arrive				-19
count right at				-7
count right be	12	-11
count right because	-32	12	-19			31
count right before		5
count right behind	-42	-13	30	17
count right bend	39			-16
count right break	-5		-5	17
count right but	16	-5
count right by	4
count right call	18
count right can	-39	30	9
count right cause	-4	25		-7
count right chip	11		-9	-11		20
count right come				-53		16
count right cover	37	-21		-9
count right crack			-7
count right cup	36	-10		-21
count right cut	-34	-17	-5	37
count right dead	32	-26
count right do	52	-15		-34
count right don't	-26	-6	29	4
count right down		-10	-12	11
count right each		-12	-4	16
count right extra	-41	11	26	-13
count right for	-33	29
count right from				20
count right get	9	-16	-14	9
count right glue	-22	-7		30
count right good	-32	-34	32	-24	20
count right hang	-5	-11		19
count right has	45
count right he				-10
count right here	-40		47	-11
count right hold		-24	-21	14
count right i'll		11		-28
count right i'm		16	-22	-18
count right i've			-34	11
count right if	19			-9
count right in	-7	-15	6	17
count right into	-18	-24	-6	31
count right is	13	-8
count right it	-13		8	17
count right it's	-19	-16		25	10
count right just	7	8	-15	-10
count right leave	-19		53
count right like				-12
count right loose	-18	-7	28	-17
count right miss	14	17	-13	-57
count right more	-31	37
count right near	23
count right need	5	12	-20	-18
count right new	-41	15		13
count right next	-4	8
count right no	-16	22	-23	6
count right not	33			-16
count right now				9
count right of	-53	27
count right off	13		-6
count right oh		26		-10
count right ok	-5	-12	22	-36
count right on				6
count right open	29			-8
count right or	34	-22		-6
count right order	22	-10	-19	-11
count right out	-26	-7	-26	49
count right over	-16		33	-37
count right pull	-9	7	8	-11
count right replace			-4	9
count right roll	-23	13	-20	12
count right run			18	-11
count right she	4	5		-17
count right short		35	-31	-41
count right should	-17	21
count right snap	29			-16
count right so	21
count right sound	24			-9
count right spare	-23	-6	38	-23
count right spares	-43	-16	17	7
count right stain		22	-9	-24
count right still	-8	11	14	-26
count right strip	21			-5
count right swap	-8			13
count right take	5	-21	-28	-26	-5	23
count right tear	-4	-6	14
count right tell	13
count right that	20		-12			6
count right the	-11	7
count right then	-11	6
count right there			-20		8
count right there's	-9			10
count right they	-10	12		-8	11
count right they're	-8	-27	23	-24
count right through	-11	-13		34
count right to				-28
count right under	8
count right up	-41		-33	67
count right use	-28			50	-7
count right want			14	-34
count right we	11	-21	7	-9
count right were	9		-6	-15		17
count right when	36	-4
count right where	-7		20
count right which	24
count right will	-11	30	-33	-21
count right with				4
count right won't		-23	32	-18
count say imperative behind	-14	20
count say modal behind		-19		6
count say past behind					5
count says copula before	-8
count says copula before not	12			-13
count says imperative behind		57
count says imperative behind not		18
count says modal before	-22	27	-25
count says modal before not	-21	5	14
count says modal behind		26
count says modal behind not			-7	12
count says none no	-14
count says none no not	-8	12
count says owed before	-8	6			10
count says owed behind not	7			-6
count says past before				5
count says past before not	-8	-31	14	5
count says past behind				15
count says past behind not			-11
count says present before	-20	16
count says present behind	-7
count says present behind not	-5	6
count see present behind	14
count sized	-48	47
count sold so false	21
count sold so true	-4
count then buy b	-23	38		-48	10
count then buy pp	-12	-19		8	7
count then have b	11
count then have pp		-9		9
count then measure b		-5	-31	21
count then measure bp	-10	24
count then measure bpp	10	-17	-16	6
count then measure i	-8		9
count then measure p		-23				16
count then measure pp	31	-16	-11
count then measure s	44	-12
count then move b				-11
count then move i	-7	10	12	-17
count then move p		-23	-20	37
count then move pp	-18		41
count then move s	-9	14
count then need b	-23		55	-45
count then need pp	-27	23	11	-17
count then other bpp	40		-7	-29
count then other i		21
count then other pp				-9		10
count then other s	8			-11
count then return b	27		-24	-8
count then say b		8
count then say pp	24	-9
count then say s	4			-9
count then see pp	23			-28
count then undefined has	5
count then undefined will		7		-20
count then use b	-12	-17		21
count then work bp		7		-5
count then work bpp		-10
count then work i		6		-10
count then work p	-8	-24		9	8
count then work pp				16
count then work s	-8			35
count use past before	-19			32
count use past behind				7
count use present behind	-21	-12		29
count verb add behind	-10			11
count verb arrive before				-17
count verb arrive behind	-10	14
count verb ask behind	8
count verb balance behind	-29		19		-6
count verb be before	-9
count verb bend before	-7	18		-30
count verb blow behind	23			-7
count verb bolt behind		-4		12
count verb box before		-34	-27	14
count verb break behind	-29	17	-5	24
count verb build behind	14			-20
count verb buy behind	-26	18
count verb call behind	-13	8		8
count verb change behind	-54			48
count verb check behind	28	-18
count verb chip before				-18		29
count verb clean behind	26			-19
count verb come before	-15	-16	28	-25
count verb come behind	-15	-5		-19	31
count verb count behind		-6	16	-21
count verb cover before		12		-22
count verb cover behind	22
count verb cup before				5
count verb date behind	13
count verb do before	6
count verb do behind				20
count verb draw behind	-8	-18	-5	22
count verb drill behind	9
count verb drip behind	12
count verb drive behind	-36	8	-4	25
count verb drop behind	5		6	-11
count verb eat behind	-9	-8		17
count verb figure behind	-17	30	-24	-9
count verb fill behind	27			-13
count verb find behind	-19		16
count verb finish behind	14	-15		-7
count verb fix behind	13	-10
count verb flip behind	-8	10	8	-9
count verb get before	-30	8	-4	22
count verb get behind	-17
count verb give behind	-30	-6		-36	12	33
count verb glue behind	-23	-6		33
count verb go before	30	-23	-18	-6
count verb go behind				6
count verb gotta behind	7		-10
count verb grab behind	17
count verb hang before	-9			16
count verb hang behind	-32			49
count verb have before	5			-4
count verb have behind			17
count verb hit behind	26			-6
count verb hold behind	23
count verb install behind	-26			31
count verb keep behind		-20	22	-24
count verb lag behind	-16	-10		22
count verb land behind	29			-21
count verb lay before	-25	18		14
count verb lay behind	-20	-18	10	18
count verb leave before			24	-12
count verb leave behind	-15		36	-22
count verb lift behind	16
count verb like behind	7	6	-13	-25
count verb make behind	-20	10	4
count verb measure behind		21		-9
count verb miss behind	-22	34
count verb move behind	6			-32
count verb must behind	23
count verb nail behind	4	-11	-5
count verb need before		16	-21	-13
count verb need behind		30
count verb null before		18	-12	-7
count verb null no	-16
count verb open behind	-13	-25	16	12
count verb order behind	-8	11
count verb pack behind		-6		11
count verb paint behind	25
count verb patch behind	24
count verb pick behind	-23	11		-20	33
count verb prime behind	44			-27
count verb pull before			5
count verb pull behind	42			-7
count verb put behind			-12	17
count verb rate behind	28			-11
count verb read behind	6
count verb reckon behind		10	-16	-16
count verb rehang behind	-33			30
count verb replace behind	-16	-8		25
count verb return behind	-6	-21	-23	-15		25
count verb rip behind				7
count verb run behind	-26	18		14
count verb sand before	25
count verb sand behind	6			-17
count verb say behind	5
count verb screw behind		-16		12
count verb seal behind	36			-32
count verb see behind	24	-8
count verb send behind	-9	-21	-4	-41		42
count verb set behind	-10			12
count verb should behind		-26		11
count verb sister behind	-15		8
count verb sit behind	-12	-26	25
count verb snap before	28			-23
count verb stain before	-12	17	-10	4
count verb stop before	-32		20	6
count verb strap behind	-31	7	5	12
count verb strip behind				6
count verb stuff behind	-12
count verb supposed behind	24
count verb swap before	-8			13
count verb swap behind	-13	13
count verb take behind	-16	-20		-6		25
count verb test behind	14
count verb think behind	-34	-7	14		19
count verb throw behind	-21	21	-19
count verb tighten behind				7
count verb top behind	18
count verb turn behind	18
count verb use before	-33			46
count verb want before	-5	-15	12
count verb wrap behind	8
count whole clause	-40			29
count work imperative behind		14
count work modal before	-20	23	5	-13
count work modal behind				-34
count work owed before			9	-8
count work owed behind	34
count work past before				30
count work past behind				42
count work present before	-47	18	16	9
count work present behind	-9	-20		24
cue bought					66
cue need		10
first abt	-17			23
first accent wall	13
first ada	8
first air	16
first alder	22
first all	18
first almond	27
first aluminum	-17	18
first an	-24	41
first anchor	11			-6
first another				-7
first any	28
first apron	12
first apt	21
first back wall	5
first backsplash	22
first bath	16
first bay				8
first bed	17
first bedroom	19
first better		8
first big		6
first bill	19
first bin	9
first birch			13
first black	46
first bled	10
first block	15
first blue	26
first boards	22
first bone	8
first booster	-25	-29	15			25
first both				7
first bottom				6
first bowl	8
first boy	18
first boys	8
first bronze	20
first brown	17
first brush	25
first brushed nickel	25
first buenas	12
first buenos	5
first bye	17
first cab	-24		31
first cake	17
first cap	21
first catch	12
first caulk	13
first cedar	25
first ceiling	4
first center	-10	15
first charcoal	-28	18		20
first cherry	24
first chisel	18
first chrome	30
first clear	24
first clearance	10
first clip	10
first coat	12
first coffee	25
first color	40	-16		-6
first composite		10
first cope	12
first corner	4
first corners		5
first count	21
first counter	23
first course	17
first credit	11
first crown			10
first cust	22	-7
first cut out	15
first dale	16
first dana	12
first darrell	11
first daylight	12
first dehu	14
first dentist	7
first dining	5
first donuts	29	-17
first double	23
first drain	9
first draw	15
first drill	19
first drywall	30
first due	21
first dumpster	24
first edges	7
first eggshell	-17
first electric	19
first electrical					8
first enough	7
first epoxy		-5		8
first eta	32
first evening	5
first exhaust	10
first existing	10
first extra	26	-6
first feel	22			-6
first fence	24
first final	6
first fire	-13		22
first fireplace	6
first first	14
first first coat	26
first fit	14
first fix	9
first flash			15
first floor	7
first flooring	6
first floors	10
first foam	22
first footing	6
first form	25
first frost	14
first full	4
first gap	11
first gas	22
first gold	19
first grand	8
first gray	-7		7
first green	22
first grey	32	-23
first happy	23
first heat's	4
first heater	-8		21	-5
first heating	8
first height	6
first hello	18
first her	19
first hickory	22
first hinge	26
first hip	16
first his	28
first hiya	4
first hola	9
first hole	17
first home	15
first hot	33
first hot side	9
first house	24
first humidity	7
first ice	20			-5
first inlet	18
first inside corner	16
first invoice	19
first ivory	33	-30
first jan	12
first kitchen island	9
first knee wall	8
first knife	25	-19
first ladder		11
first ladder's	-5			14
first lag	15
first land	19
first laser	26	-18
first latch	19
first lead	24
first leaf	9
first left hand	20
first leg	14
first legs	11
first lh	37
first lid	20
first lift	10
first lime	17
first line	11
first linen	15
first liner	15
first lint	6
first list	13
first listen	6
first load	11
first log	4
first lol	11
first loop	6
first lord	6
first low	8
first luis	23
first lunch	4
first machine	12
first main	12
first maple	33
first mask	8
first mate	14
first max	6
first meanwhile	28
first merry	20
first metal	25	-5
first middle	6
first mine	20			-6
first miter	9
first moisture	15
first moisture meter	12
first more		4
first morning	15
first mortar	37
first mud	6
first my	5
first nah	12
first nailer	16
first netting	13
first neutral	14
first new	-39			33
first niche	-6	15
first nickel	9
first night	19
first no	6
first ofc	6
first old	11
first open	10
first orange	18
first oscar	12
first our			11
first ours	7
first outdoor	8
first overflow	13
first overhang	-19			22
first pack					7
first paint	15
first paper	6
first part	41			-15
first pattern	16
first permit	10
first pete	6
first photos	27
first pictures	16	-7
first pin	-13	-7	30	-5
first pine	8
first pipe		15
first pitch	13
first plant	13
first plate	-19			17
first plate's	7
first plenty	-35		46
first plug	6
first powder	15
first press	10
first pressure	4
first pressure's	8
first price	14
first prime	21	-11
first prob	18
first pump	17
first punch	17
first punch list	12
first putty	4
first quiet	26
first rain	18
first rake	6
first rang	11
first ray	27
first rear	20
first red	22
first red oak	28	-14
first relay	-12			20
first replacement		20
first report	9
first reveal	6
first rh	31
first rick	16
first ridge	14
first right hand	25				-9
first rigid	-33			41
first ring	31
first rise	19
first ro	15
first rod	34
first rosa	11
first rough	4
first rough in	5
first rough opening	10
first router	10
first rudy	12
first sand	17
first saw	18
first scaffold	-6		15
first schluter	-7			17
first school	16
first screed	8
first screwdriver	7
first seam	21
first seams	12
first seat	-13			21
first second	24
first second coat	9
first section	8
first service	12
first set	39	-25	-22	-30
first shd	7
first sheath	13
first shift	17
first shingle	8
first shoot	12
first shwr	18
first sign	26
first silicone	-11			15
first silver	15
first sir	13
first skip	25
first skirt	21
first slab	12
first slide	7
first small	-23	28
first snow	19
first soft close	30
first solder	12
first some	-39	45
first something	20
first sorry	17
first spare				14
first spec	9
first splashback	16
first splice	14
first sponge	-14	21
first sprayer	14
first stack	8
first stain	15
first stainless	47	-14		-24
first stair	8
first stairs	16
first static	11
first store	18
first storm	14
first straight	19
first strap	5
first strike	22
first stub	10
first stucco	18
first supposed	9
first svc	13
first sweep				9
first tall	16
first tank	12
first tank's	13
first tap	9
first template	10
first their	27
first this	17
first those	32
first ticket	10
first tile	13
first tony	27	-10
first traffic	12
first travelers	22			-7
first trench	5
first truck	15
first upper	6
first vac				12
first van			5
first van's	13
first vent		7
first wall	10
first wall's	6
first walls	5
first walnut	32
first warranty	20	-14
first water	6
first waterproof	14
first wax	-21		18
first weather	12
first weatherstrip	31
first weights	21
first weld	15
first white	60	-11
first whoever	23
first wind	6
first wire	14
first wrong						6
first yellow	13
first zone	17
gap  bought	34		-15		-27
gap  have		-27	33	-22
gap  have copula	9	-16	6	-14
gap  have none	-15	-26	28	-23
gap  have past	15			-7
gap  have present			6
gap  need	40
gap  need imperative	50	-37
gap  need none		19		-19
gap  need owed	36	-21
gap  need past		-34	19
gap  need present	32	-15
gap  none imperative		23
gap  none modal	44	-21
gap  none none		7
gap  none owed	8
gap  none present	6
gap  used	15
gap  used imperative	19	-19	7	-24
gap  used modal	20	-6
gap  used none	27			-32
gap  used owed	30
gap  used past	16		18	-38
gap  used present		-11	-12	-6		21
gap & need	-39	45
gap ( need	25	-31
gap + have	-49	-21	50	-23
gap + need	-42	65
gap + need imperative	-28	39
gap + need owed	-12	33
gap + none	33			-17
gap + used	-46	-24	-6	61
gap + used none	-51	-20	-8	57
gap + used past	-9			19
gap , and need	-40	49		-11
gap , and need none	-40	49		-11
gap , and used	27	-7
gap , bought	-27	-11	-7	-36	49
gap , bought none	-25	-40		-37	53
gap , dry. used	7
gap , got need	-34	-23	38	-13
gap , got need past	-34	-23	38	-13
gap , have		-27	44	-44
gap , have need	-29	-8	30
gap , have need present	-29	-8	30
gap , have none	-14	-32	58	-49
gap , have past	30	4	-27		-21
gap , need		44		-8
gap , need have	-14	18
gap , need have owed	-14	18
gap , need none		32
gap , need none owed	23	-21
gap , none past		18		-21
gap , so none copula	21	-8
gap , so none none	-11	18
gap , used	-20	-20		34
gap , used copula	-27		11	20
gap , used none	-16	-34		47
gap , used none past				5
gap , used past			21
gap - none	23
gap - none none	12
gap . also need		25	-22	-14
gap . bought	22
gap . bought copula	8
gap . have copula	23
gap . have owed	-14	18
gap . have past	21
gap . have present	7
gap . need copula	21
gap . need none owed	-14	21
gap . need used		11
gap . need used owed		11
gap . none modal	14
gap . none owed	27	-19
gap . none past	9
gap . none present	19
gap . used copula		14
gap . used past	25			-29
gap . used present	36
gap : none		-17		9
gap : none none	-6	-18	-14	27
gap : none past		-8	10	-15
gap ; have	27
gap ; have none	27
gap ; need	-13	21	-4	-19
gap ; none	23
gap about none	25
gap about none past	16
gap about none present	12
gap across and none	30	-16		-19
gap across none	8
gap and about need	-32	41	-17	-28
gap and about need modal	-25	30	-15	-14
gap and about used	-33	-23	-20	43
gap and bought	-64	-48	-31	-37	80
gap and bought copula	-30	-20	-15	-22	42
gap and bought past	-18	-10	-10	-19	31
gap and bought present	-42	-28	-21	-24	47
gap and have	-52	-19	91	-19
gap and have copula	-34		35	-15
gap and have none	-25	-22	42	-15
gap and have past		-19	33	-10
gap and have present	-25	-12	43
gap and i got used			12
gap and i got used past			12
gap and it's none	9
gap and it's none copula	9
gap and need	-30	98
gap and need copula	-13	42
gap and need imperative		15
gap and need modal	-30	36
gap and need none	-17	47		-15
gap and need owed	-13	49
gap and need past	10	5		-21
gap and need present	-43	63		-6
gap and none copula	29
gap and none imperative	-21	18	-9	9
gap and none modal		8
gap and none none		25	-12
gap and none owed	-34	24			12
gap and none past	24
gap and none present	16
gap and put used	-21			25
gap and there's none	5		-13		5
gap and there's none copula	5		-13		5
gap and there's used	-25		47	-5
gap and there's used copula	-25		47	-5
gap and used	-23	-21		85
gap and used copula	-27	-6		51
gap and used modal	7	-20	-13	5
gap and used none	-26	-36		50
gap and used past				36
gap and used present		-20		15
gap are in have	20
gap around used	20
gap around used past	18
gap at bought	32				-13
gap at bought past	32				-13
gap at need	32	-21
gap at used	21
gap because need	24
gap because none none	6
gap before need	15
gap but have	20		-12	-7
gap but none copula	13
gap by need	31	-28
gap by used	28			-22
gap call it none	-20	17	-17	7
gap call it none imperative	-36	25	-11	14
gap cause none	5
gap cause none copula	5
gap down none	22			-13
gap each none	-6	14
gap far bought copula	5
gap far bought none			6	-15	8
gap far bought owed	-8	19
gap far bought present	19
gap far have imperative		20
gap far have modal		18
gap far have none		12
gap far have owed		28
gap far have past	-7			5
gap far need modal	10
gap far none owed		7
gap far returned					6
gap far returned imperative			12	-19
gap far returned modal		11
gap far returned none		10
gap far returned owed		22
gap far returned past	-12	-10		-11	37
gap far used owed		15
gap fitted, used	-16			12
gap for have	23
gap for have copula	7
gap for need	58	-13
gap for need copula	14
gap for need modal	14
gap for need none	28	-5
gap for need owed	42	-24
gap for need present	6
gap for none copula	-14	20
gap for none owed	18
gap for none past	21
gap for none present	13
gap for used	31			-15
gap for used past	27	-4		-17
gap from none owed			17
gap from none past	18
gap from used	37		-17	-6
gap get me none	11	-8
gap get me none imperative	11	-8
gap get need	33	-24
gap get none	-31	34
gap get none imperative	-11	18
gap gone. used	28			-5
gap got need	-26		32
gap got none			16	-21
gap got none past			21	-23
gap had none	27		-10
gap had none present	29		-18	-7
gap has none	27
gap has none present	27
gap have none			7
gap have none imperative	10
gap have none present	-11		19
gap hung, used	6			-5
gap hung, used none		-4	5
gap i cut none				8
gap i cut none past				8
gap i got need	-39	-9	43	-13
gap i got need past	-39	-9	43	-13
gap i got none	-10	5	14	-28
gap i got none past	-10	5	14	-28
gap i got used	-11	-5	24	-18
gap i got used past	-11	-5	24	-18
gap i had none	-37	17
gap i had none present	-37	17
gap i have none	-31		33
gap i have none present	-31		33
gap i need need	14	-10
gap i need none	-17	24
gap i need none owed	-17	24
gap i put none	-6			16
gap i put none past	-6			16
gap i ran out of none	17
gap i ran out of none past	17
gap i used none	-23			29
gap i've got have	40		-29
gap i've got have past	39		-30
gap i've got none	-31		7	10
gap i've got none past	-31		7	10
gap in and used			8	-9
gap in and used past			8	-9
gap in have	26
gap in have copula	6
gap in have none	12
gap in have past	5
gap in have present	33		-9
gap in it none				-11	18
gap in it none copula	-11				20
gap in need	49	-24
gap in need owed	22	-13
gap in none imperative		9		-12
gap in none none	15
gap in none past				13
gap in none present	19
gap in used	31
gap in used copula	14
gap in used imperative	12
gap in used none	13
gap in used past	20
gap in, used			19	-35
gap in, used none			20	-37
gap in. used	-11	21
gap in. used none	-30	22		14
gap into used	10
gap is need	-6		18
gap is need copula	-6		18
gap is none	19
gap is none copula	13
gap it's need	27	-19
gap it's need copula	27	-19
gap it's none	-18	19		5
gap it's none copula	-18	19		5
gap left and have		-9	9
gap left and have copula	4
gap left have	26		-15
gap left in have	19
gap left in have copula	15
gap left in have past	8
gap left of have	32		-25
gap left on have	15
gap left so have		16	-11
gap left so have none		20	-14
gap left. have	22	-6	-4
gap left. have copula	20			-6
gap left. have none		-14		12
gap left. have past	13
gap like none	19
gap like none none	18
gap line have		-20	16	-20
gap line have none		-24	19	-20
gap line need		27
gap line need none	-12	29		-15
gap line need past	15
gap line need present	-6	14
gap line none	15
gap line none none	11
gap line none past			7
gap line used past				-6		16
gap more and need	-5	20
gap more and need owed	-8	15
gap more, need	25	-7
gap more, need none	25	-7
gap more. need			9
gap n need	-39	42
gap near bought modal		-17			20
gap near bought none	23
gap near bought past	7
gap near bought present	-18	-10	4		19
gap near have copula	-7	10
gap near have imperative		9
gap near have modal		9
gap near have none	-19
gap near need none	-20	64		-26
gap near need owed	6
gap near need past	-5		17
gap near returned	4
gap near returned copula	20
gap near returned none	12
gap near returned past				8
gap near returned present	14
gap near used modal	-8	25
gap near used none				14
gap near. bought copula	26
gap near. bought none	30
gap near. bought past	-6		-15			22
gap near. have imperative	12
gap near. have none			17	-26
gap near. have owed	13
gap near. have past				-17
gap near. have present	23
gap near. need copula	6
gap near. need modal	15
gap near. need owed	8
gap near. need past	-15					15
gap near. none imperative	6
gap near. none owed		12
gap near. returned	-27		29
gap near. returned none	-20		20
gap near. used copula	18
gap near. used modal	9
gap need have	8	-7
gap need have owed	12	-11
gap need. need	5
gap need. need none	5
gap no none		-23	-10	26
gap not need	22
gap now and none			16
gap now none	23			-13
gap now none copula	23			-17
gap of need	51	-44
gap of need imperative	22	-18
gap of need owed	42	-38
gap of none copula			17
gap of none modal	5
gap of none none	16
gap of none present			15
gap of those and need	-9	27		-10
gap of those and need imperative	-17	22		-8
gap of used	42			-23
gap of used past	37			-26
gap off used	20			-12
gap off used past	16			-10
gap oh and need	29
gap oh and need copula	20
gap on have	12
gap on have present	15
gap on it none	-25			30
gap on it none copula	12
gap on it used	26			-19
gap on need	32	-10
gap on need imperative	28	-17
gap on none	5
gap on none imperative	17
gap on none none	6
gap on none owed	31	-26
gap on site, have	-22	33		-6
gap on used copula	-10			20
gap on used none	13
gap on used past	34
gap on, used none			-23
gap on. used	-7	8
gap on. used none	-8	17		-6
gap or need	7
gap or none	-14	23
gap out none	10
gap out of none	22
gap out of none past	8
gap out of used	36	-18	-9	-7
gap out of used past	30	-14	-8	-11
gap over none	7
gap over none past	11
gap over used	5
gap plus need	-36	44	-10	-28
gap plus used		-32	-18	25
gap put none	-13			16
gap put none imperative	-14			17
gap so bring have		8
gap so bring have imperative		8
gap so get none	10
gap so get none imperative	10
gap so have	-23	31		-12
gap so i need none	-31	36
gap so i need none owed	-31	36
gap so i put none		-10
gap so i put none past		-10
gap so none modal	26	-18
gap so none none		25	-24
gap so none owed	8
gap so none past	-4	-25		16
gap so none present	17
gap so order none	6
gap so order none imperative	6
gap so that's none	-12	14	-9
gap so that's none copula	-12	14	-9
gap so used				-9
gap so used none		12	-10	-8
gap spare. have	-29		17	23
gap still on have	7
gap still on have none	5
gap swapped, used	18	-23		-18
gap that's none	-12	-5		17
gap that's none copula	-13	-5		18
gap the need	49	-41
gap the need copula	21		-9
gap then none		5
gap there's need		-13	8
gap there's need copula		-13	8
gap there's none			15
gap there's none copula			15
gap there's used		-14	17	-21
gap there's used copula		-15	19	-22
gap through none	32			-20
gap through none past	5
gap through used	20			-11
gap through used past	16			-8
gap to none	35
gap to none copula	23
gap to none none	18
gap to none past	13
gap to used	13
gap to used none	15
gap tomorrow none	23
gap took none	-14		-12	30
gap under none	9
gap under none copula	8
gap under used	27			-13
gap under used past	8
gap up, used	28		-22
gap up, used none		-8		5
gap used none	-4			15
gap used none past	-4			15
gap used used	13	-9	15	-25
gap used used past	16	-12	15	-30
gap used, used	-7		44	-28
gap used, used none	-4	-22	31	-33
gap used, used past	-10		27
gap used. used	13			-11
gap used. used none	20
gap was none	18
gap with need	17	-8
gap with need imperative	29	-26
gap with none copula	48			-15
gap with none modal	8
gap with none none	19
gap with none past	-9			26
gap with none present			6
gap with used	6			-7
gap with used past	6			-10
group eachOf		-18	-16	11
group range	17			-27
head 2	13
head 2 x	43	-32
head 2x	6	-12
head 2x10	15	-5		-17
head 2x2	-17		17	-6
head 2x4	-29	-7		31
head 2x6	14
head 3	15
head 80 grit		-12	13
head aav		-21	-28	16
head abs	28
head abt	17
head ac	14
head accent wall				5
head access panel	-9	13				9
head across	28	-4
head acrylic	-23	18
head adapter	-14	-20	-9		17
head adapter's		14
head adhesive	-10
head aerator	-8	7
head afci		10
head aff	23
head afternoon	18
head ago	18
head air	33
head air gap			21	-8
head alarm	-15		23
head allen key	8
head almond	18
head alone	14
head already	28			-11
head aluminum	-27	17		15
head amps	18			-6
head anchor	-9			13
head anchor bolts	-7	24		-22
head anchors	-32			11
head angle	-10	-6		20
head angle stop			-14	11
head answer	32	-23
head anti tip bracket	-19	26		-8
head anti-tip bracket	-25			30
head anyhow	22	-6
head anything	23
head anyway	-18	23		-13
head apart	30
head apron	15
head arc fault		-14		11
head arc fault breakers	-9		-10	16
head arch	11
head architrave				9
head architraves	-7	-7	-8			22
head archway	7
head area	28
head arm	-30	15		24
head astragal	-11	17
head attic	-26		-14	32
head attic stairs	-5			15
head away	24
head awning					16
head b	33
head baby	14
head back	19
head back door	17
head back side	18
head back splash	-14	17
head back's	31		-9
head backer	-7			18
head backer board	11
head backer rod	-43	36		20
head backflow	12
head backing	11	-11
head backset	35	-23
head baffles		7
head bags	-12	30		-24
head ball	30	-9
head ball catches	-17	16	11	-14
head ball valve	-12	14	5	-8
head ballast			14
head banana	11
head band	14	-10
head banding	-15	-11	33
head bang	12
head barn door track	15
head bars	26	-17	-6	-11
head base cabinet	-6	-16	-18	20
head base cabinets	16
head base caps	7
head base coat	16
head base units	23			-15
head baseboard's	23
head baseboards		14	-4	-11
head basement	16
head bases					18
head basin	14
head basin waste	11
head basins		-9		10
head basket	-27	15	15
head bath fan	38
head bath waste	20
head bathroom fan	11
head batt	16	-8
head batten	-20	11		6
head battens				12
head batteries	-7			25
head battery	-41	33		22
head battery pack	-7	30			-13
head battery's		4
head batts	-8	28
head bay window		11
head bays	33	-16		-14
head bead	11	-13	5	-8
head bead board	11		-7
head beadboard	12
head beam's			5
head beams	28
head bear	17
head bearing	-15				21
head bearing's		9
head bed				7
head bedroom 2	23	-5	-6
head bell	45	-13		-10
head bell wire		8
head below	8
head belt	-37	15
head belt's		16		-8
head belts	-20		18
head bench	14
head bench top	23			-14
head benchtop	5
head bend	-31		20	-9	25
head bends	13
head better	36	-10
head bevel	4
head big	16
head bill	23
head bin	23
head birch				-13
head birch ply				-4
head bit	20			-10
head bite	22
head bits	30
head black iron	-33			36
head blade's	10
head blank plates	-37	37	-24	-23
head blanks	-7	7	-24	-32	26
head bleach	12
head bled	12
head bless	13
head blind	-14	15			6
head blind's	6
head blinds	-5			10
head blk	18
head blocking	39
head blocks	-7			15
head bloke	21
head blower door	16
head blower motor's	21
head blower's	20	-8
head blue tape	-6	27
head board's	-5	13
head boards	-45			24
head body	-4	21
head boiler's	20			-9
head bolt	-4			33
head bolt's	23
head bolts	-22	16
head bond	-5	14
head bonding	30	-17	-17	-13
head bonding coat	21			-5
head bonding primer	-16	4		6
head bondo	-43		23	19
head bone	28
head book	5
head bookcase	19
head books	19
head booster	-18	-22		-5		25
head boots	5		-16
head border	12
head bore	7
head boss	15
head bother	8
head bottle trap		10
head bottom	15
head bottom plate	5
head bottom track	9
head bottoms	24
head bout	-17	27
head bowl	20
head bowls				10
head box	8
head box extender	-44	19		28
head box extenders	-8	19		-22
head boxes	35		-5	-8
head boy	22
head boys	14
head brace	-33	9	8	19
head bracket	-20
head bracket's	37	-13
head brackets	-33	5		15
head brads	-44	30	7
head braided lines		-9
head brake	29	-16
head brand					17
head brass	12
head breaker's	7
head breakers	-10	-12	-8		14	19
head brick				5
head bricks		-18
head brim	13
head brkr		9	-5
head brush	-14	19		-6
head brush seal	-6				19
head brush strip	-17	23		-16
head brushed nickel	-10	24
head brushes	-46	21	27	-27
head bubble cover	-31		18	8
head bucket	-9	10
head bug	12
head builders bog	8			-15
head built in	13
head built ins	14
head bulbs	-17
head bull nose	-36	29	11	-12
head bullnose	-12		13
head bump	10
head bumpers	-12	7
head burn	24
head burner	18
head burners	20			-12
head bus	9
head bushing	-19	24	10
head butt joint	23
head butt joints	13
head button		-10
head butyl	-24		13	11
head buzzer	17
head bye	13
head bypass	-20	-20		15	21
head c	27			-7
head cab	-20	12	10
head cabinet door	20		-12
head cabinet doors				10
head cabinet pulls	-18	-10		29
head cabinet screws	-33	11	14
head cabinet's			5
head cabinets			30	-6
head cable	-25			23
head cables	10	-30	-11	6
head cage	10
head cake	18
head cal	11			-5
head call	23	-6
head calls	15
head cam lock	-33	-14	6	27
head camera		5
head can light	18
head can lights	-4			9
head cans	10	-19
head cap nails	-10		7
head cap stones			14	-39
head cap's		13		-7
head capacitor	-18			16
head capacitor's				9
head caps	19	-23		-8	8
head car	10
head carcass	26
head carcasses		-32	10	7
head card	34
head cardboard	-7		19
head carp	22			-5
head carpet	24
head carpet tile			12	-12
head carpet's	15
head carriage bolts	-14	22
head cars	7
head cart	37
head carton			12
head cartridge	-18	-12		19
head case	15
head casement	-28	32
head casements		-15				16
head casing's	18
head casings	4		-21	10
head cast	21
head cat's	18	-6
head cat6	-6			22
head cedar shakes	30			-17
head ceiling	13
head ceiling drops	7
head ceiling fan		-5		-7		19
head ceiling grid	23
head ceiling medallion	34	-8		-5	-8
head ceiling paint		-24	21	-25
head ceiling rose	-8			15
head ceiling texture			12
head ceiling tile			10	-16
head ceiling tiles	-19	-13	20			11
head ceiling white	-16	35	-26
head ceiling's	22
head ceilings		10
head cell	-20			18	11
head cement	-14		13
head cement board	7		-19
head center	29
head centre	9
head centres	35			-10
head chain's	17
head chains	26		-7	-12
head chair	30		-5
head chair rail	33
head chairs	14			-28
head chalk	12
head chandelier	21
head channel	-7	20		-10
head charcoal	-19		-20	6		18
head charge	16
head chase	14
head check	14
head check valve	-16	17
head check valve's		10		-19
head cherry	22
head chg		-19		7
head chime	15
head chimney	36
head chimney cap	-17			-17		25
head chimney's	15
head chipboard				-9
head chk	20
head christmas	19
head chrome	-5	-32	-34	-17	16	21
head chunk	9
head church	17
head circuit	18
head circulator	-30			29
head ckts	30	-4	-4	-10
head cladding	28			-19
head clamp	-17			13
head clamps	-15	9
head clapboards	19
head clean		-11	13	-15
head clean out	20
head cleaner	-21	-9	5	17
head clear silicone		9		-7
head clearance	11
head cleat	16	5		-22
head cleats			21
head clip		7
head clips	-41	10
head clockwise	8
head close	8
head closer		8
head closer's	-13		10	9
head closers	-6	-17	19
head closet	23
head closet bolts	-18	14
head closet door	11
head closet doors	7
head closet flange	6
head closet rods		-11		4
head closet shelf	12
head closure strip		-5	18
head cloth	-31		24		11
head coat	14
head coat hooks			-16
head coats	42	-21
head cock	-19	26	-8
head code	21
head coil	12			-8
head coil stock	-34	10	23	-5
head cold	30
head collar	-32	10		16
head collar ties	17	-11
head column	22
head columns	24			-13
head come along	21
head coming	17
head common	18
head company	17
head composite		6	-11
head composite shims	-14	-6		22
head compressor	29
head compressor's	19
head concrete	10
head concrete's			-19	14
head condensate line	21
head condenser	24
head conduit		-17
head construction adhesive					10
head contact	-17	9	-15	15
head contact adhesive	5
head contact cement	-24	7		17
head contents	34	-9	-13	-28
head contractor bags	-11		13		-12
head cooktop	30	-15
head coping	18
head copper	-13	-5		37
head corbels	-9	-19		13	12
head cord	-7	7
head cord's	8	-10
head cords	43	-29		-7
head cork	-13		19
head corner boards	-17	13
head corners			5	-22
head cornice			12
head council	7
head count		-4	10
head counter	31
head counters	7
head countertop	7
head county	9
head coupling	-47	-6		43
head couplings	-23		13
head course	23
head cousin	13
head cove	-24	8		19
head cove base				-4		4
head cover		14
head cover plate	-6	10
head crack isolation	10			-6
head crazy	15
head cream		-20	-18	22
head credit	16
head cricket	10
head crown's	16
head crumb	18
head crystals	-12	20		-8
head cubbies	-4			13
head cup	-11		18
head cupboard	14
head curb's	26	-10
head cust	25	-14
head cut	13	-23
head cut out	21
head cutout	36
head cuts	32		-15	-7
head cylinder	-17			-24	32
head cylinder's	-4			14
head dale	20
head damper	15	-6
head damper's	15
head darker			11	-10
head darrell	11
head date	24		-5
head day	7
head daylight	12
head dead bolt	25	-21
head deadbolt	-9			15
head dealer	8
head deck boards	29			-8
head deck mud			-32	17
head deck screws	-46	22	17
head decking	-20	-4	-15	30
head deep	32
head dehu		12
head dehumidifier	-18		6
head delivery			6
head den	-28	-12	19	14
head depth	24
head desk	32
head desks	19	-13
head dia	21
head diamond bit	-23	11	16	-19
head diamond blade	-39	42	-11	-19
head difference	5
head dime	12
head dimmers				12
head dining	14
head dirt	37		-7
head discharge	-22	24
head disco	13
head disconnect	18
head discs	-30	5		21
head dishwasher	19
head dishwasher's	22
head ditra	-5		-11	19
head diverter	29			-21
head doctor	6
head dogs	15
head done		-12		7
head donuts	29	-17
head door casing	21
head door casings	16
head door closer	-7	13
head door frame	15
head door jamb	6
head door jambs	14
head door stops		-16		15
head door sweep	-26		15		8
head door's	17
head doorbell	14
head dormer	9
head dots	39	-5		-31
head double		-4	8
head double hung	-23		-9	21
head doubles	-16	-19	-7	26
head dowel	-21			33
head dowels	13
head downlights	-24	9	5
head downpipe	9
head downspout				14
head downspout elbow	-8	5	7	-5
head draft	17
head drain	6
head drain line	12
head drain pan					10
head drain pan's				8
head drain's	19
head drains	27
head drawer	22
head drawer boxes	-15	-14	14			17
head drawer front	19			-10
head drawer front's		-11			12
head drawer runner				-5	19
head drawer slides	-7		7	-16		13
head drawers	21
head drawing	19
head drill	18
head drill bit	-12	21	-4	-6
head drip cap	-29	-19	19	16
head drip edge	33		-9
head drip leg's	21
head drip line	-25	5		22
head drip pan	-19	26		-20
head drop	43
head drop cloths		-8	17
head drop ear	22			-15
head drops	45			-18
head drum			14
head drunk	16
head dry	29
head dryer duct	-5	-15		19
head dryer vent	38
head dryer's	12
head drywall anchors	-9		15
head drywall screws	5	9	-6	-12
head drywall's		-26		21
head duct	11
head duct tape	16
head duct's	17
head ducts	30			-16
head due	23
head dumpster	31
head dumpster's	-4	16
head duplex	5	-5		4
head dust	5
head earlier	20
head east	13
head eave	-8	15
head edge	10
head edge band	8
head edge trim	-18	30		-8
head edges	21
head edging		13	-5	-20
head egg shell		-18	21	-21
head eggshell	-42	23				7
head egress	15
head eighth	18
head elbow	-9	11
head elbow's	-12	22		-5
head elbows	-52	6		31
head electric	6
head electrical	42	-26	-22	-18
head element		11
head element's	-20			23
head else	17
head em	6
head emergency light	32	-9		-12
head emergency lights	24			-17
head emt	-33			37
head enamel	-10	-24	42
head enclosure	24			-15
head end cap	6			-9
head end caps	-19	10	5
head ends	24
head enough		-14	13	-15
head entry	21
head entry door	9
head epoxys	-9	-7	-7	20
head escutcheon	-24	38		-16
head eta	30	-8
head even	5
head everything	14
head everywhere	14
head except	20
head exhaust	5
head exhaust fan	28
head exit sign				7
head expansion		-28	4	17
head expansion tank	-9	20		-5
head expansion tank's	13
head extender	-13	15
head extenders	-42	53		-25
head extension	-7	23		-8
head extractor	29
head extractor's	6
head eye	33		-5
head face	21
head face frame	20
head face frames	28
head factory	4
head fall	18
head falls	23
head fan	12
head fan motor	-34	36		-10
head fan's	18
head fans	-19		30
head fascia	35
head fast set	-18		-14	20
head faucet	-9					15
head faucet's				13
head fault	11
head feature wall	13
head feet	10	-14
head fella	22
head felt pads	-38	25	-11	-10	12
head felt's	18	-12
head fence line	16
head field	4
head field tile	7	-37	-13	9		5
head field tile's			-14	18
head figure	11
head file	27			-16
head fill valve	-9			14
head filler strip	-37	34
head fillers	-40	-15	38	-11
head filter	-19			11
head filter rack						15
head filter's		15		-26
head filters	-26			25
head final	8
head fine	21			-8
head finger	53			-12
head finish			10
head finish coat	17
head finish nails		20		-14
head fire	17
head fire caulk		21	-9	-5
head fire door	11
head fire tape	10
head fireplace	5
head fireplace surround	-16	-10	-4	-14		25
head first	7
head first coat	32
head fit			-13	7
head fitting	15	-5
head fittings			15
head fixing	9
head fixture	15
head fixtures		-17
head flagstone		-10	5
head flame sensor	19
head flange	36
head flanges	-20	-11		28
head flap	7
head flapper	-29		-9	51
head flashing tape	-8
head flashing's	6
head flashlight	30
head flat	5
head flat white			-9	-5	21
head flats	-27			6
head flight	13
head float switch	-4
head floor	9
head floor boards	-9	-12		19
head floor box	22
head floor drain	25			-5
head floor sink's	-10			17
head floor tile		-31	26
head floor's	14
head floors	15
head flow	27
head flue	20
head flush	8
head flush mount	-27	8	-20	14
head foam	-8			17
head foam board	-37	12		31
head foam rollers	-32	31		-11	6
head foam tape	-23	-5	13	10
head foil	-23	-5	10	12
head foil tape	-25	-5	28	9
head footer	23	-17
head footing	21
head footings	7			-13
head fork	21
head form	23
head former	26	-19
head forms	13
head four by four		10
head fourth	21	8	-25
head frame		8
head frame's	11
head frames		-6	10
head free	36	-21	-10
head freezer	13
head french doors	18
head fridge	9
head front	9
head front door's	10
head front edge	9
head frost free	-5			4
head frp	8		5	-10
head fryer	6
head furnace	10
head furnace filter	-6		11
head fuse	-7			16
head gallon	23	-5
head galvanized	29
head gap	26
head gap's	5
head gaps	26			-7
head garage	21
head garage door	16
head gary	31
head gas flex	-27	28		-11
head gas line	13
head gas meter	22
head gas pipe	11
head gasket	-22	6		11
head gasket's	-34	41
head gaskets	-26	26
head gate	40
head gate latch	-9	23
head gate post	-14	20
head gate valve	5		-6	-11
head gate's			6	-7
head gauge	22			-16
head gazebo	18
head get	29
head gets	13
head gfci			7
head gfi	10
head girl	25
head glass doors	-21	-6	7	14
head glass panel	16
head glides	5
head globe		35		-25
head gloss				-9
head glue's				-11
head glycol	8	-16	-9	13
head go	22
head god	13
head gold	-18			15
head good	16
head got	10	-18	-16		19
head grain	20
head grand	11
head grandson	21
head granite	25			-4
head graphite	28	-19		-8
head gravel's				10
head gray		-10	14
head grease	-5
head grey	26	-20
head grid	13
head grill	6
head grille	14
head grinder	14
head grit	8
head groove	11
head grout sponge	-11	16
head grout's	-21		24	-25
head guard	-22			19
head guard's	-13	20
head guards	-8	-15	-6	24
head guide	-40	28		22
head guides	-16	7	11
head guillotine	17
head gully	17
head gun		5
head gutter	30
head guy	36
head guy's		5
head guys	6
head ha	14
head hail	13
head hair	34
head half	7
head halfway		14		-14
head hall	-9			21
head hammer	23
head handle's	18
head handles	5			-37
head handrail	30
head handrail bracket	17
head handrail brackets		-13
head handrail's	28
head hands	21	-11
head handset	-14	8	11
head hang	18
head hanger		-16		9
head hangers	24
head happy	27	-14
head hard	6
head hardware	8		8
head hardwood		-31	28
head header	12
head header's	16
head heart	12
head heat mat	19
head heat mat's	28			-6
head heat pump	29
head heat's	12
head heater	7
head heater's	9
head heating	4
head heating mat	-6			19
head height	27
head height's	32		-13	-18
head hell	21
head hello	7
head here's	20
head herringbone	8		9	-14
head hers	13
head herself	10
head hex	-33	-14	8	26
head hex key	16
head hex tile	-13	-23	26	-14
head hi	8
head hickory	-30	-13	21	11
head hidden clips	-30	-8		27
head hidden hangers	-18		11	11
head high	55	-6
head high bays	16	-12		-21
head higher	9
head himself	26	-16
head hinge pin	20
head hinge screw		5
head hinge screws	-20	15		9
head hit	8
head hiya	16
head hold	18
head holds	7
head hole	38
head hole saw	-25	30		-10
head holes	60
head home	23
head hood duct	23
head hood filters				-8
head hood's	13
head hook		6
head hooks	-13	-19	10	12
head hopper	7
head horn	22	-14
head horse	-12	19
head horses	5
head hose bib	23
head hose clamp	9
head house wrap	27	-10
head housing		6
head hrv	22	-5
head humidity	25
head hump	7
head hydraulic cement	-24	17	-7	21
head ice and water	-37	-8	-13	45
head ice maker	14
head inch	21	-9		-12
head inside corner	-14	19
head inside corners	7	12	-8	-28
head insp	18
head inspection	10
head insulation	22
head insulation's	29
head intercom	17
head interior doors	-17	-23	-11		25
head intumescent strip	17
head inverter's	11
head invoice	14
head iron	12
head island	13
head isolators	4
head itself	18
head ivory	8
head j-box	30	-16
head j-channel		-21	-10	-22	10	18
head jack	12
head jacket	8
head jacks	-32	-17	33	-7
head jam	9
head jamb	15
head jamb's	24			-12
head jambs	26
head jan		16		-8
head jefe	7
head jig	45	-22		-13
head job	21
head joint compound	-23	-11	32	-11
head joints	27
head joist	22		-8
head joist hangers	-35	32		-13		5
head joist tape	-16			20
head joists	25
head jonno	12
head jumper	-9			16
head junction box	8
head just	8
head keep		10
head keeps	9
head kettle	9
head key	12
head keypad				12
head keys	14			-7
head kick		11
head kick plate	9			-13
head kick plates	-9		18	-15
head kickboard	6
head kid's	25			-12
head kidding	12
head kit	-74	47	19
head kit's	-9		19	-9
head kitchen faucet	-9			16
head kitchen faucet's	-5	22	-19	-13
head kitchen island	7
head kitchen sink	6
head kitchen tap	12
head kits	-43	24	26
head knees	10
head knife	26
head knobs	-34		18	13
head knot	13
head label	14
head lads	19
head lady	28	-10
head lag	8
head lagging	-12	10
head lags	-21	13	-19	19
head laminate		-34		14
head laminate's	-22		19
head lamp	-6			8
head lamps			-7	6
head landing	18
head lands	-8				17
head laser	39	-17
head last	14
head latex				10
head latex caulk		18	-17	-15
head lath and plaster	24	-16
head lath strips	-19			24
head laundry box	20
head laundry sink	25			-15
head laundry tub	9
head lav	9
head layers	30			-17
head layout	15
head lead	-25	27
head leaf	42		-16
head leaves	34			-7
head led strip	21			-15
head ledger	5
head ledger's	12	-10		-5
head left hand	-15	27
head leftover	-25	-11	19	4
head leg's	16
head lens		5		-15
head letter	33	-17
head level	7
head leveler	-9	16
head leveller				-5
head levelling compound	6	11	-7	-23
head lh	11
head lick	35	-28
head lid's	16
head lids	7
head life	7
head lift	23
head lifts	19			-10
head light	37
head light box	6
head light rail		11
head light switch	13
head light's	12
head lights	10
head lime				5
head limestone	-5	-11		15
head line	16
head line hide	-5	13
head line set's	20			-8
head line's	5
head linear drain	28
head linen	14
head liner	-20	9	-9	14
head lines	24
head lining paper		-13	13	-10
head lino	16
head lint	17
head lintel	11
head lip	13
head list	30
head listen	6
head lite	-16		16
head live	23			-4
head living	6
head load	18
head lockbox	-7	-12			23
head locks	33	-13		-33
head lockset		-30	18	-27
head log	28
head lol	8
head long	43
head long wall	10
head loo	23			-6
head looks	7
head loop	20
head loops	43		-23	-27
head lord	20
head lot	30	-14	-22	-5
head louver		4
head low	38
head lowers	-6			14
head lug	25	-4		-6
head lugs	37			-15
head luis	16
head lumber	17
head lunch	4
head lvl		-6		9
head lvp			8
head lvt				-7
head machine	28	-5
head maglock	20
head magnolia	-18		-10	21
head mailbox	23
head mailbox post	18
head make	11
head man	39	-15
head manifold	42	-15		-17
head manometer	10
head mantel	-7					19
head mantel's	21			-6
head manual	11
head maple	14
head marble			13
head marble threshold	16
head marco	10
head mark	14
head mask	16
head masonry bit	-24	17		12
head mastic				15
head mat	30
head match	11
head mate	23	-16
head matter	8
head maximum	15
head mdf	-4	-12		30
head meanwhile	14
head medicine cabinet	17
head melamine	11
head membrane's		10
head merbau	-13		25	-23
head mesh	-7
head mesh tape	-25	39	-9
head message	12
head metal	-15	19
head meter	26
head microwave	10
head mill	-9	17
head min	31
head mind		5
head mine		7		-15
head mine's	-34	37
head mini split	29	-14
head minimum	14
head minus	32	-17	-17	-21
head mirror cabinet	-8			15
head mirror clips	-10	12	6	-7
head mirror lights	8
head mirrors	-14	-6	-17	38
head mist coat				4
head miters	23
head mix	-44				16
head mixer	-9		12
head mixing valve	35
head moisture	9
head moisture board		16		-22
head moisture meter	28	-7
head molding			8
head money	10
head morning	17
head mortar's	-18	-19	21
head mortise	8
head mosaic's	-7		-12	21
head mother	5
head motor	11
head motor's	16
head mouse	16			-7
head mrs	11
head mud's	16	-12
head mudroom bench	19
head mudroom lockers		-9		15
head multi finish		12	-9	-21
head multi-finish	-31	11		11
head myself	14
head nah	11
head nail	41
head nail holes	19
head nail plate		5
head nail plates	-52	35	9
head nailing's	28			-20
head nails		4
head name	9
head nameplate	21
head nap	-26	33		-11
head natural		11		-12
head navy		-9	5
head netting	9
head neutral		-7				15
head newel	23
head newel post	-9	16
head newel's	15
head news	12
head niche	27
head night	32	-9
head nipple	-18	23
head nitrogen	20
head noon		-16	-16	-24		24
head north	13
head nose	20
head nosings	23			-12
head notch	24	-19
head nozzle	-18			25
head number's	4
head numbers	-12	15	7	-13
head nursery		-10		9
head nut	-4			9
head nuts	-21	38		-24
head o ring	-8			15
head o rings		-5	-22	23
head oak		-11	13
head oak's	-13	-7	21	-5
head oc	9
head odd	10			-12
head office	10
head ohms	12
head old	9
head old work box	-24	18
head one	16
head one's	8
head ones	36
head only	23
head open	37		-30
head opener's	24
head opening	23
head openings	24			-7
head order	37	-7
head osb	-17	5	-11	22
head oscar	6
head ours	8
head outlet	47
head outlet boxes	28	-5		-14
head outlet covers	-12		-11	7		12
head outlet's	17
head outlets	9
head outside	-25	38	-4	-8	9
head outside corners	27		-14
head oven	21
head overall	20
head overflow	16
head overflow's	22			-9
head overhang	18
head overhangs	21
head own	19			-8
head p trap	-9			8
head p-trap	-4			16
head packers	-5	-15	-8	-12	20
head packing	8	-21
head pad				10
head paint finish	27			-15
head paint's	20
head painters tape	-30		-4	31
head pair	-23	6		15
head palings	-17		13
head pallet	20	-21	14	-28
head pan	-8	20
head pan heads	-41	31		-9
head pancake	22	-13
head pane	14	-4
head panel door	-4			13
head panel schedule	34	-6		-18
head panel's	31
head panelling	24			-9
head panels				4
head panic bar	10
head paper tape		15	-14	-22
head parlor	12
head parquet	6
head part	46
head particle board	13
head party wall	13
head pass	20
head passage		-23	22	-30
head paste	-17		7		8
head patch		-13
head patio door	-4			15
head paver	11			-26
head pavers		-4
head pea gravel				9
head pedestals	-35	-5		29
head peephole	-26	11		15
head pencil	40
head pendant	-6				12
head pendants	-28			30
head penny round		-24	18	-30		8
head penny rounds				7
head people	9
head pergola	25
head permit	16
head pete	6
head pewter	-8		11
head pex		-29		22
head phone	19
head phone's	9
head photo	23
head photocell					11
head photos	25
head piano hinge	-24			23
head picket	-19					23
head pickets	-31			26		15
head picture	34	-6
head picture rail	7
head picture window	12
head pictures	20
head piece		-9	13	-10
head piers	37			-29
head pig	11
head pigtail	17	-5
head pile	12
head pilot	15
head pin	9
head pin's	-15				19
head pine			-26	-25	20
head pins	-35	15		6
head pipe's	13	-13
head pipes	34
head pit	6
head pitch	20
head pivot	25
head place	10
head plain	24	-17		-10
head plan	10
head plank	26
head plank's	14			-11
head planks			43	-20
head plant	20
head plaster	21
head plaster washers	-36	27	-26	19
head plaster's	15
head plasterboard	-8				12
head plastic	13
head plate	-21
head plates	-42	25
head plenty	44		-19
head pliers	17
head plinth	39
head plinths	-18	9		14
head plug's	32
head plugs	-8			4
head plumber	5
head plus	29	-18		-20
head ply			9	-13
head ply's	-19		19
head plywood				-6
head plywood's	-23			19
head pocket	11
head pocket door	32
head pole		15		-16
head poly sand		21	-11	-17
head poly's	26	-6
head polyurethane				4
head pond	34
head pop rivets		5	-11	5
head pop up	-27	33		-14
head popcorn	16
head poplar	-26		10	17
head porcelain	-7	-11	19	-16	10
head porch				10
head post	9
head post bases	-10	13	-12	-14	14	17
head post caps			-20	-10		15
head post holes	13
head posts		-23		29
head pot	27			-20
head pot filler	20
head power	4
head precharge		8		-13
head prehung		10	-5
head prehungs		-10		6
head premix	-15	5		13
head press	19
head pressure	24
head pressure treated	-15	30	-6	-23
head pressure's	-10			16
head price	40	-20
head primed	-5	17
head primer			13
head print	29
head privacy	-20	-15	17	8
head probe	23
head profile	-13	18
head prv	-23	19			8
head puck	-7			12
head pull	9
head pulley	30	-10
head pullouts	18	-13
head pulls	-8	-19		5
head pump's	12
head punch	25
head punch list	11
head purple	-26	5	4	9
head purple board		6	-22	5
head purple primer	-36	28	-27
head put	13		-11
head putty	-6		8	5
head putty knife	16
head putty's	9
head pva		4	8	-13
head pvc	-27	9		12
head quarters		4		-31
head quartz	18
head quiet	26
head quikrete	10	-21	-5
head quote	39	-25
head rack	27
head racks	22
head radiator	9
head radiator cover	18
head radiators	32	-9		-27
head radio	23	-15
head rads	23			-7
head rafter	28
head rafters	16	-7
head rag	35			-14
head rags		8
head rail	8
head rail bolts	-12		16
head rail brackets	-19			18
head rail's	9
head rails	-12			4
head rain	11
head rake	9
head ramp	6
head range	23
head range hood	-14		29
head rapid set	-28		17	-8
head rather	11	-12
head ray	27
head read	20
head reads	24
head ready	31			-10
head rear	14
head reason	14
head rebar	-13			19
head receipt	31	-11
head receps	-5	-19	-19	24
head receptacle	-12			24
head receptacles	-28	-22		32	6
head reception desk	17
head recess	10
head red	5			-7
head red oak	18	-8
head red tape	-22	-5	33	-24
head reducer	-43	30			9
head register	20
head register's	17
head regulator				4
head relay	-12			20
head relief valve		10
head relief valve's	7
head remains			17	-12
head remnant	-19	-5	36
head remote	39
head rental	25
head repair kit	-13	27
head repeat	29		-13	-22
head replacement	27	-28
head report	12
head reset	10
head resin	27
head respirator	12
head retaining wall	17
head return	30
head return's	7
head reveal	27
head reveal's	4
head reveals	19
head rh		6
head ridge cap	28
head ridge vent's	-19			23
head right			9	-13
head rigid	-24	-6		37
head rim board	-10		-13	16
head rim joist	23
head rim's	19
head ring	-47	26		14
head rings	-29	22		5
head rip	23
head rise	44
head riser	25
head riser's	10
head risers	64	-29		-13
head rivets	-32	7	19
head rms	24
head ro	27
head road	7
head rockwool	-33			28
head rod brackets	7	-19			14
head rods	-31	8	-4	17
head roll	30	-5	-16
head roller	-9	19			6
head rollers		-4
head rollouts	26			-10
head rolls	-15	16
head romex	-24	12		7
head roof	21			-8
head roof cap	-24	24		6
head roof hatch	14
head roof jack	-21	28
head room	15
head root	7
head roots	7
head rosette	-13	18
head rough				11
head rough in	18
head rough opening	12
head rough opening's	10
head round	19
head round's					10
head router	22
head row	17
head rubber washer	19		-24	-23
head rudy	8
head rug	19
head rugs	29	-8		-24
head run	47
head runner	-19	27
head runners				10
head rush	4
head saddle	-7	21		-17
head saddles		13
head said	6
head salt	-7		7
head sample	26	-9
head samples	25	-12
head sand	8
head sand paper	-4	25	-9	-12
head sandpaper	26	-10		-17
head sands	10
head sandstone	17		-12	-14
head sandwich	29
head sash brush	-23	32
head sash cord	-34	35		5
head sash cord's	14
head sash lock	-4	14
head sash weights	24			-26
head sashes	26			-22
head satin		-5	9
head save	7
head saw	8
head saw's	-17	20
head sawhorses	20			-11
head scaffold			9
head school	11
head sconce	-25			31
head sconces	-15	-9		5	21
head scotia	5	-13	8
head scrap		-14	17	-9
head scraper	6
head scratch coat		-16	-15	17
head screen	-9					14
head screen door	17	-18
head screen frames	10		-16	4
head screen's	18
head screens		11		-22
head screw's		5		-10
head screwdriver	38
head screws	-11			31
head scribe	-9	5
head scribe molding		-5	19	-12
head seal	-9			18
head seal's	15
head sealant	-43	48
head seam tape		7
head seam's	23
head seams	32
head seat	7
head seat's		-17			17
head second	23
head second coat	15
head second coats	25
head second floor	-21	-7		24
head section	8
head see	12
head seed	-18	-21	13	-25	21
head self			20	-34
head self leveler	-9	-4		20
head self-leveler	23	-19
head semi		-25	18	-12
head semi gloss	-28	5	-13	30
head sensor	-25	22	4
head set	-14			12
head setting blocks				9
head seventh	9
head shade	22
head shaft				14
head shd	11
head sheathing				-27
head sheet	-9				22
head sheet rock	-7	-10		-7	18
head sheet vinyl	21
head sheets	16
head shelf	16
head shelf bracket	-13	19
head shelf brackets	-16	15	-19	15
head shelf pins				6
head shellac	-19	30
head shellac primer	-21		21	-4
head shelves			-8	24
head shelving	13
head shield	20			-8
head shims	-71	19		14
head shingle	37	-13	-12
head shingles	25	-9		-17
head shoe				-5
head shoes	29
head shoot	23	-12
head shop	37
head short	-15	20
head shower	31
head shower arm	13
head shower pan	10
head shower tray				11
head shower valve's	16
head shower walls	20			-7
head shower's	15
head shows					13
head shut	15
head shut off	34
head shutter	18
head shutters	5	-13
head side	11
head side door	20
head side door's	-15	19
head side's	29
head sides	16
head sideways	6
head siding's	25	-11
head sign	5		10	-10
head silicone	-9
head sill foam		-5	11
head sill pan	-16			13		11
head sill plate	21
head sill's	10
head sills	22			-23
head silver	4
head single	-28	8	20	-15
head single gang	-18	23
head singles	10	7	-19	-7
head sink	12
head sink base	16
head sink clips	6
head sink cutout	5
head sink's	11
head sinks	5	5	-4	-6
head sir	12
head sister	35			-33
head sits	18
head skim	44	-16
head skim coat	16
head skip	27
head skirting's	-10	14		4
head skylight	10
head slab's						6
head slabs	-32	-21	16	20		4
head slat	5	-26		11
head slats	-6		-9	10
head sleeve anchor	-17	11		12
head slid				11
head slider	16
head slider's	13
head slip	26	-23
head sliver	27
head slope	5
head slope's	6
head slot	14
head slow	14
head slurry	10
head small	21
head smoke alarms	-37	7		33
head smoke detector	6
head smoke detectors	-11	-6		9
head smokes	-8			12
head snake	21
head snow guard		-13		13
head sock	14
head socket	16
head sockets		-27	20	-7
head sod	-16			21
head soffit	44
head soffit vents	37			-19
head soffit's	30
head soft close		-9	11	-7
head soft close hinges	-28	-10	20	6
head soil	6
head soil pipe	7
head solder	8	-16	11
head somebody's	17
head something	17
head somewhere	32
head sonotube			5
head sorry	23
head south	17
head spacer	-33			36
head spacers				4
head spackle		-6
head spare keys	-34	10		15
head spec	7
head spindle	24
head spindle's	21	-13
head spindles	20	12	-20	-39
head spins	11
head spits	-5	15
head splash block	-24	9	16
head splice	30	-11
head spline	-10
head sponge	-33	35
head spoon	12
head spot	19
head spots	48			-17
head spout	-31	32		7
head spray		8	-4
head spray foam		-9	14
head sprayer	6
head sprayer's	-8			14
head spring	23
head spring hinge	-16		22
head spring hinges		17
head spring's	11
head springs		-22		13
head sprinkler	7
head sprinkler head				9
head spur	36	-31
head square	35	-13		-10
head st	16
head stack	32
head stain	38	-14
head stain blocker	-16	11	-10	18
head stainless	-38	-4		49
head stainless screws	-35	25	11	-15
head stains	5
head stair	13
head stair nosing	-22		11		11
head stair skirt	10
head stair stringer	25
head stair treads	-15		25	-14
head staircase	15
head stakes	13	-22	-15
head standards	-7	10
head standpipe	16
head standpipe's	15
head stands	9
head staple		15		-18
head start	14
head starts	14
head stat	27
head stat wire		9
head stat's	8
head static	25
head static's	7
head status	16
head stem		10		-24
head step	25
head step flashing				11
head step light	17
head step light's	20
head steps	26
head stick		9
head sticker	21
head stile	14
head stiles	30
head stock	-23	15	24	-22
head stone's		9
head stones	6
head stool			12
head stools	10
head stop	29	-4
head stopcock	-14	-15		21
head stops	-13		6
head store	39
head storefront	15
head storm	12
head storm door	-31	6	14	-15		21
head storm windows	-14		-8	26
head story	8
head stove	33
head straight	-7	16
head straight edge	23	-15
head straightedge	21			-15
head strainer	9			-19
head strainers	-29			32
head strapping	9
head straps	-19	13		10
head stretch	-11	-5		16
head strikes		14	-14	-9
head string	18			-10
head stringer	26
head stringers	23	-11
head strings	34			-30
head strip	-5	-10	17
head stripper	-7		-10	10
head strips	-14			22
head strong	23
head structural screws	-52	34		21
head stub	5
head stub's	9
head stucco	13
head stud	40
head studs				-24
head subfloor	18
head subfloor's	30
head subpanel	-21			26
head subway	-30		21	12	-13
head suction cup	-9	14
head sum	8	-25
head sump	20
head sump pit	11
head sump pump	7
head sump's	9
head sun	13
head sun's	-9		15
head supplies	9
head supply line	-24				18
head supply lines				9
head supply plenum's	5			-6
head supposed	24
head surround	23	-18
head svc	14
head swab	-20	14	7
head swarf	4
head switch	-16	19
head switch box	8
head switch plate	-33	29		8
head switches		-21	-11	20
head table	6
head table saw	21
head tables	36	-14	-6	-7
head tack cloths	-4	32		-29
head tag	46			-16
head tailpiece	-20	16	17	-18
head tails	33
head take off	19
head takes					13
head tall	33			-12
head tank bolts	4
head tanking	-9	21	-9	-22
head tap	25
head tapcons	-33	26		8
head tape's			12	-16
head taps	30	-11
head tar		-5	18
head tarp		-12		27
head tea	21	-6	-9	-5
head tech	6
head tee	-27	9		24
head tees	27		-11	-15
head tell	18
head temp	18
head tempering valve	-11			19
head template	29	-11
head tenth	14
head test	8
head tester	-12	23
head the lady	11
head the lady's	-8	14
head thermocouple				5
head thermometer	-21	25
head thermostat wire	14
head thick	50			-7
head thin set	5		8	-13
head thing	14
head thinner	7
head third	42
head third coat	18
head thread	16				-5
head three's	31			-21
head through bolt				5
head thumb	15
head tight	30
head tile	4
head tile adhesive	-9	-22		31
head tile's	26
head tiles		-5	24	-5
head timber		-10	14	-13
head time	8
head timer	24
head tint	-15	-12	10	-24		16
head toaster	6
head toe kick		15
head toe kick's	12
head toggle	-19		11
head toggle bolts	-9			-10	23
head toggles	-41	36		10
head toilet	6
head toilet flange	34
head toilet seat	-17			26
head toilet's	31
head toilets	-5			13
head tony	27	-7
head tooth	13
head top	8
head top edge	8
head top pivot	-13	20
head top rail	-26	10	20	-10
head top's	16
head topcoat	11
head tops	22			-10
head torch	16
head touch	29
head touch up kit	27	-11
head towel	24			-33
head towel bar	-30			-13	17	18
head towel bar's	22
head towel rail	11
head towel warmer	18
head track	29
head track's	21
head traffic	12
head trailer	27
head transformer's	6
head transition	19
head trap arm	21
head trap's	11
head traps	-8	-24	15			16
head trash pullout	17
head travelers	35			-6
head travertine	7	-27	-26	-17	24
head tray's	21
head tread	9
head treads	-6
head tree	13
head trench	16
head trigger	25			-14
head trim kit	-16	5				19
head trim nails	26	-19	-5
head trim ring	-38	20				25
head trim screws	-29	-4		25
head trim's	23
head trims	33
head troffers	34	-28	-25	-15
head trouble	8
head trowel	-20	22		-18	15
head truck	20
head truck's		-7	-4		17
head trunk	6
head trusses			-9	12
head tub drain	16
head tub surround	22
head tub's	4
head tube	-46	9		31
head tubes	-18		19
head turn	25
head turns	33			-22
head tv	17
head twice		4
head two	17
head two by eight		8
head two by four	-16	10		7
head two by fours	-5
head two by six		5		-15	10
head two by ten			-5
head two by tens	-15	28
head two by three		10		-17
head two by twelve	15			-15
head type s	-5	10		-7
head type x			-15	9
head under cabinet lights	20
head undercoat	-33			12		17
head underlay	5		-22
head underlayment		-27	11
head undermount clips	-12	16
head underside	9
head union	-18	36		-13
head unit	20
head unit's	9
head upper				7
head uppers		-22
head upstairs		-26	-15	20
head upstand	27			-9
head ute	28
head vac	-4	-16	19
head vacuum	22
head valley	6
head valley metal	-16	14			13
head valley's	13
head valve's	-4			14
head valves	-7	20
head van	6
head van's	13
head vanity light				9		5
head vanity's	15
head vapor barrier	-21	9
head vapor barrier's	22
head varnish			-9	11
head vault	20
head vct		-7		13
head vein	17
head veneer	5	14		-22
head vent cover		13
head vent fan	12
head vent hood						15
head vent pipe			13
head vent stack	22
head vent stack's	8	-16
head vent's	8
head vents	23	-10	-20
head vine	6
head vinegar	6
head vinyl plank	-24		18	6
head visor	12
head void	7
head voltage	20			-7
head vs	4
head wainscot	19
head wait	35
head waits	18
head walk	11
head wall	13
head wall cabinet	4
head wall cabinets	-10			17
head wall paint		-8	15
head wall plate	29			-10
head wall plates		13		-4
head wall studs	30			-13
head wall tile	26	-31	13
head wall's	11
head wallpaper		-22	24
head wallpaper's	14			7	-13
head walls	22
head walnut	-27	18	27
head want	23	-17
head wants	9
head warm	14
head wash	10
head washer	-28			35
head washer's	13
head washers	-61	60	-19
head waste	4
head water	24
head water heater	12
head water heater's	32			-11
head water line	5
head waterproofing	32	-11
head wax	-12		8
head wax ring	-69		44	27
head wax rings	-17		14	-6
head way	17
head wc	24
head weather strip	-39	37
head weatherstrip	-5	6
head wedge		-12		14
head wedges	-14	17
head weekend	28	-12	-5
head weep	13
head weep hole	19
head weep holes	7
head weight	-7			21
head weights	-14			20
head well	17
head wet saw	-13	19
head what's	-22	-4	-29	33
head wheel	-15	13		10
head wheels	37	-25		-21
head whenever	28	-15
head whip				7
head whips	-11			15
head white oak		6		-11
head whoever	21
head wide	42
head width	22
head wife	12
head wifi	7
head wind	17
head winder	21
head winders		17	-39	-10
head window	5
head window sill	15
head window stools	19		-21
head window well	8
head winter	9
head wire	17
head wire lath			8
head wire mesh	24			-20
head wire nuts	-10		-14	29
head wire's	-12	27
head wires	62	-25		-33
head within	16
head wood filler		10	-22
head wood glue	-33	23	-32	15
head works	25			-5
head worktop			8
head wrap		-14	22
head wrench	20
head wrong		16
head x	32	-15
head xfmr		8
head yellow	18
head yes		-6	10	-4
head yet	24
joined run-on none	8
joined stop owed		4
kept			24
last cue bought other		8
last cue bought same					29
last cue lacks same		4
last use buy owed same		-10	17	-16
last use buy past same					13
last use buy present other		13	-8	-4
last use buy present same	29	-20	-13	-10
last use have imperative same		10
last use have past same	-11			18
last use measure imperative other		21
last use measure modal other	-20		20
last use measure owed other	9
last use measure past other				17
last use measure present other			11
last use move imperative same	11
last use move modal other	-17	21
last use move modal same	28
last use move owed other	-30	19	20
last use move owed same		6
last use need modal other	13
last use need modal same	-4	5		-5
last use need past other	14
last use need past same	-7	10
last use need present other			6	-14
last use null imperative other	15
last use null owed other			7
last use other owed other	23			-5
last use other owed same		11
last use other present other	8
last use return owed same	27	-9
last use return past other	24
last use return past same	-24					25
last use return present same		11
last use say imperative other					10
last use say modal other			16	-5
last use say owed other		-7	-9	18
last use see copula same	6
last use see imperative other		-8	16		8
last use see imperative same	-6	15
last use see modal other			7	-9
last use see owed same	23
last use see past other	8			-9
last use see present other			12	-11
last use see present same	4
last use use imperative other	-20					24
last use use imperative same	4	-24
last use use modal other	-16	20
last use use modal same	30
last use use past other	10
last use use present other	12
last use use present same			23
last use work owed other				-15
last verb add same		-24	7	7
last verb adjust other	27
last verb adjust same				8
last verb arrive other	29	-13
last verb arrive same		-31	26	-17
last verb ask same	18
last verb back same	-8	14
last verb backfill same	30			-17
last verb bag same	4
last verb balance same	8
last verb believe same	6	-19		6
last verb bend other				-7
last verb bet same	28
last verb bind same	15
last verb blow other	14			-17
last verb bolt other	21			-9
last verb bolt same		-21			17
last verb book other	19
last verb book same			7
last verb bore same	20			-7
last verb borrow same	-4	19		-13
last verb bow other	16
last verb bow same	7
last verb brace same			7
last verb break same	-6	6
last verb bring other	12
last verb bring same		22
last verb bubble same	7
last verb build other	-10			19
last verb build same	-22			27
last verb bump same	-19	7	15	-12
last verb burn other	-28	-6		34
last verb burn same	-23		16
last verb bury same	13
last verb butter same	6
last verb buy other	19
last verb buzz same	-11			15
last verb can other		-14	13
last verb can't same		-7		5
last verb cap other			6
last verb cap same	21
last verb catch same	26
last verb caulk other	24
last verb change other	-9	25		-10
last verb change same		-14
last verb charge same	7
last verb check other			18	-7
last verb chip same	18
last verb chisel same	-13	-7	8	11
last verb chuck same	-11		17
last verb clamp other				11
last verb clean other	17
last verb clear other	32
last verb clear same	40			-7
last verb clip same	9	-17
last verb close other	10
last verb close same			21
last verb coat same	-13			15
last verb come other	10
last verb consum same	-11	-17		23
last verb cope same	23			-4
last verb core same	-15			31
last verb correct other	22
last verb count same	8
last verb cover other	-5	19
last verb cover same				-10
last verb crack other				-13
last verb crack same	-17
last verb crawl same	-17			21
last verb crush same		5		-14
last verb cup other	-20	23
last verb cup same	-6	-12		14
last verb cure other		21	-12
last verb cure same	-30	19		11
last verb cycl same	14
last verb decide same	20
last verb deliver other	23
last verb deliver same	-5	-19	22
last verb demo same	24			-6
last verb dial same	7
last verb didn't same	-22	20		4
last verb die other		14	-9	-27
last verb die same	20
last verb dig other	15		-6	-19
last verb dig same				23
last verb doesn't same	28			-28
last verb don't other	-16	23
last verb drain same	8
last verb draw other	17	-8
last verb draw same	16
last verb dress same	11
last verb drill same		-18		4
last verb drip same	-16			10
last verb drive same	11
last verb drop same	10
last verb drug same	20			-15
last verb dry other	-4		-5	15
last verb dry same	15
last verb dump same	-15		20
last verb eat other	-24	22
last verb eat same	15
last verb email same				9
last verb empty same	16			-4
last verb end same	12
last verb exchange other	20
last verb exchange same	22	-6
last verb fail same	41	-29		-8
last verb feed same	-10			22
last verb feel other	10
last verb feel same	25	-7
last verb figure same			4
last verb file other	-15		22	-16
last verb file same				10
last verb fill other	-5		20
last verb fill same	7
last verb find other	-24				15
last verb finish other				9
last verb fire same	-8	18
last verb fix same	-15			41
last verb flash other	13
last verb flip other	-7	19		-10
last verb flip same			11
last verb float other	10	6	-23	-5
last verb float same	-29		16
last verb flush same	-9	24
last verb foam other	-14	16
last verb fog other	-11	17
last verb fog same			10	-7
last verb forget same	18
last verb frame same	-16	21
last verb fre same	10
last verb freeze same	-6		9
last verb fur same	5
last verb give other		-11		12
last verb glaze same	-13			21
last verb glue other	11	-12
last verb glue same	-18
last verb gonna same	16
last verb gotta same		5
last verb grab other					12
last verb grab same	6	-16			21
last verb grind other			11
last verb grout other	23	-9	-17
last verb grout same				13
last verb hack same		16		-20
last verb hand same	-23			14		19
last verb has other			18	-17
last verb haul same	21			-7
last verb he'll same	10	-5				6
last verb head same		9
last verb help same	12
last verb hook same	-12			17
last verb hum same						14
last verb i'd same		-9	13	-6
last verb i'll other	-6	-10		17
last verb install other		7
last verb install same					11
last verb insulate same	-13		-16	21
last verb it'll same		21		-15
last verb jack same				8
last verb jam same	6
last verb jump same	8
last verb keep other	9
last verb know same	8
last verb land other	24		-6	-24
last verb land same			4
last verb latch other	5
last verb latch same		4
last verb lay other	-5		15
last verb leak same				4
last verb lean same	25
last verb learn same	27			-20
last verb let other	-8	-15	26	-19
last verb let same	6
last verb levell same	4
last verb lift other	22	-17
last verb lift same		14
last verb like same	-20	27		-11
last verb listen same	16			-8
last verb live other	28	-5		-13
last verb lock same				6
last verb look other					9
last verb lose other	5
last verb lose same		12
last verb love same	21
last verb lower same	14
last verb make other			14
last verb mark same		11
last verb match same	-19	-10	22
last verb measure other	-22			12		15
last verb measure same	26
last verb meet same	6
last verb meter same	11
last verb miss same	18
last verb miter same	24
last verb mitre same	12
last verb mix same	18
last verb mount other	19			-5
last verb move other	-34	29
last verb move same		6
last verb mud same	29	-21
last verb must same	7
last verb nail other	13
last verb need other	5
last verb need same		23
last verb nick same	-11			17
last verb nip same	15
last verb notch same	38
last verb notice same	30
last verb open other	-13			14
last verb ought same	23
last verb owe same		26
last verb own same	28
last verb pack other	12
last verb pack same	16	-11	-6
last verb paper same	-14	8	-21	10
last verb pass other	6
last verb pass same			-8		13
last verb patch other	-15	5	12
last verb pay same	10	-6		-18
last verb peel same	6
last verb phone same		18
last verb pick other	-12			18
last verb pin other	16
last verb pitch other				6
last verb pitch same		11
last verb place other	10
last verb plane other	17
last verb plane same	12
last verb plate same		-10		14
last verb plug other	-18	-9	26	-10
last verb plug same	-9
last verb plumb same				8
last verb point same	-24			30
last verb polish other	10
last verb pop same	12			-18
last verb pour same	-45			9		11
last verb prime other	17
last verb promise other			14
last verb prop same	13
last verb pull other	-11			16
last verb pull same				6
last verb pump same			10
last verb purge same	19
last verb push same	5
last verb quit same		-6
last verb quote same	-8	18	-12	-6
last verb rack other	31	-11	-7	-12
last verb raise other	-15	21
last verb raise same	18
last verb rate other	14	-10	-15
last verb rate same	46	-16		-13
last verb rather same	-6	15
last verb rattle same	-15	16		7
last verb reach same	-9	15
last verb read other	-27		25
last verb read same	40
last verb receive same	-22		21		-18
last verb recess same	8
last verb reckon other	9
last verb reckon same		13	-12	-14
last verb recoat other	9	-6	5	-12
last verb recoat same		-16	-13	7
last verb recut other	12
last verb recut same			10
last verb redo other	5
last verb redo same	-7
last verb refasten other	12
last verb refit same	-13			11
last verb refuse same	13
last verb reglue other		-9	13
last verb reglue same	21			-10
last verb rehang other	16
last verb rehang same	4
last verb rekey same	-41			45
last verb remake same	22
last verb remind same	-16	27
last verb rent same	11
last verb repair same		15		-6
last verb replace other	-13	27		-7
last verb replace same	-30		10	6
last verb require other	17
last verb require same		25	-41	-28	-6
last verb reroute same	17
last verb reset other	13
last verb reset same	9
last verb retest other	-21	27
last verb return other	-14	-7	21
last verb return same	-15	7				19
last verb ring same			-5	11
last verb rip same	14	5	-4	-15
last verb rob same	5
last verb rock same				6
last verb roll other	14
last verb roll same	18
last verb rough other	18
last verb rough same		-10		11
last verb round same	4
last verb rub same	13
last verb run other	-5			13
last verb rust same	-28	-5		32
last verb sag other	-24		31
last verb sag same		14		-25
last verb sand other		-6				5
last verb say other	9
last verb scoop same	17			-8
last verb scrape other		6
last verb scratch same	8
last verb screen same	23
last verb screw other	21
last verb scribe other	6
last verb seal other	15
last verb seal same	11
last verb see other			5
last verb send other			12
last verb set other				5
last verb settle same				10
last verb shave same	15
last verb shift other	18
last verb shift same	21
last verb shim other	-4
last verb shin same	8
last verb ship same	23
last verb short same	25	-16
last verb should other		-5	9
last verb show same	-11		10
last verb sign other	10
last verb sister other	20
last verb sister same		-7		9
last verb sit other	-9
last verb size other	7
last verb size same	-8	26
last verb skim other		-17	-15	20
last verb skim same			10
last verb skip same		12		-16
last verb sleeve same	-18	24
last verb slid same	11
last verb slit same			11	-11
last verb slot same	19
last verb smell same	15
last verb smooth same	-13	-15		22
last verb snake same		13
last verb snap other	-18			18
last verb snap same	-19	10			7
last verb snug same		5
last verb soak same	20
last verb sold same			14
last verb sort other	-5
last verb sort same	-16	5	19	-21
last verb speak same	18			-11
last verb spend other		11
last verb spend same	-7	-21	-17	-19	36
last verb spin same		12
last verb splice other	17		4	-22
last verb splice same	-11
last verb split same	-12	10
last verb spray same	41			-14
last verb stack same	12
last verb stagger same				9
last verb stand other	-9			16
last verb staple same	23			-14
last verb start same		-6
last verb stay other		9
last verb stay same	10
last verb stop other	-15	9
last verb straighten other	13
last verb straighten same				-11	18
last verb strap same				11
last verb stretch same	30			-20
last verb strip other	-36			28
last verb stuff same				8
last verb supposed other	15
last verb swap same	6
last verb swear same					13
last verb sweat same	33		-11	-20
last verb sweep same	21
last verb swing other	10
last verb tack same	-11	17		-4
last verb tag other	11
last verb tap same	15
last verb tape same	7
last verb tear same	13
last verb tell other	-12				12
last verb template other	15
last verb test other		6
last verb text same	-4			15
last verb that'll same	-16	21
last verb they'll same				5
last verb think other		-9			16
last verb thread same	-23		28
last verb throw same				16
last verb tie same		-5		-9	11
last verb tighten other				8
last verb tile other		-14	14	-13
last verb tile same	-15	9
last verb top same	14
last verb touch other	-10	17
last verb touch same	11
last verb touch up other	10
last verb trace same	18
last verb treat same				11
last verb trim other		9
last verb trim same				8
last verb trip same	-11	28
last verb try other	21	-23
last verb try same		18	-19
last verb tuck same			12	-14
last verb turn other	4		4	-6
last verb turn same	6
last verb use same			6
last verb vacuum other	8
last verb vacuum same	29
last verb vent same	9
last verb wait other	5
last verb wait same	-5	11
last verb walk other	21
last verb walk same	21
last verb wanna same	-22				14
last verb want other			11
last verb wash same				6
last verb wax same	16
last verb weep same	8
last verb weigh same	19
last verb weld same	7
last verb will other		-16	8
last verb wipe same	4
last verb wobble same	26			-4
last verb won't same	19
last verb work same	18
last verb would other	23			-15
last verb would same	9
last verb wouldn't same	11
last verb wrap same		-14		13
last verb write same					12
last verb wrote same	-5			18
last verb zip same	-20			12	17
left 
 *	-6		10
left 
 >		-12	15	-12
left 
 N	25
left 
 need		4
left 
 •					4
left 
 ☐	-16	22
left !				19
left ! !	-17			25
left # N		8
left # T	15
left # alright	9
left # back	6
left # bath	4
left # closet	8
left # deck	15
left # dining room	4
left # do	13
left # for	25
left # get	-18	-8	-31	11	32
left # guest bath	7
left # guest room	4
left # hall bath			8
left # have	21
left # in	10
left # jefe	10
left # library	10
left # loft	10
left # need	-8	18
left # ok	13
left # pantry				9
left # powder room	4
left # put	-32			36
left # replace	-15			22
left # right	9
left # run				8
left # salon				5
left # so	23
left # swap	6
left # take	21
left # that's	14
left # well	15
left &	-10	13
left '	10
left ) ,	-4		18	-42	9
left ) .	29
left *	-6		10
left +	-13
left , G		-7		6
left , N	18
left , Q	12
left , add	-8	7		5
left , all	4
left , and	-7	53
left , be	19
left , bring	14	-7
left , buy	-35	27			14
left , cut			-4
left , find	32	-5		-20
left , for	20
left , from	7
left , get	-42	44	15	-11
left , have		-10		9
left , in	13
left , it's	32
left , maybe		-14	22	-16
left , need		5
left , not	18
left , now	33			-19
left , only	-17	11	10	-17
left , order					24
left , plus		27
left , pull	25
left , put	-18	-17		35
left , reset	25			-16
left , run	10
left , swap	-13			14
left , take		-5	-13	19		-5
left , that's	-10	14	-11
left , the		-22	21
left , then	23
left , want	5
left , with	-14	-9		21
left - get	-23	28
left - hall	12
left - need		5
left - use	-21			38
left . 
	12
left . ,	-21	10	16
left . -	27
left . G	19	-7	11	-27
left . N	11
left . Q	22
left . T	16
left . add		-5		14
left . all	-26	-4		36
left . also		27	-6
left . and	-13	42	-36	-33
left . bath	10
left . bedroom	4
left . bring		9
left . but	9
left . buy		21
left . cut	-16	18
left . find	-9		-5	23
left . for	22
left . get	-60	27	19	-15
left . grab	16	-14			5
left . hall						5
left . hang	8
left . have	-31		62
left . i	5
left . in	15
left . it's	23
left . keep	-8	-9	20	-9
left . miss	24
left . mix	-25	-12	-8	31
left . need		29
left . on	16			-8
left . only	18
left . order		31
left . other		-23		11
left . pour	12
left . put	-15	-18		31
left . return	-19	-14				29
left . run	12
left . short		19		-8
left . swap	8
left . take	-8	-11	-15			25
left . there's	31	-5
left . use	-27			59
left . want	-20	26		-5
left /	16
left 1 /	16
left 5 /	8
left : 
	4	9	-8	-15
left : G	-15	21	-11
left : N	17
left : Q	33	-10	-18	-9
left : have	-24		30
left : kitchen	20
left : need		13
left : use	-10			26
left ; need		4
left =	20		-16	-14
left >			9	-12
left ?	8
left @	27
left G 
	23
left G &	-24	16		11
left G +	-17
left G ,	-12
left G -	-9	21
left G :		-14
left G ;	10
left G @	6
left G N	25
left G Q		32		-16
left G T	-34		16	7
left G about	17			-11
left G along	5
left G are		10		-13
left G around	12
left G at	10
left G be	28
left G because	16
left G behind	11
left G but	17
left G cause	10
left G come		-23	20	-13
left G crack	13
left G down	-14	-17	-4	27
left G drags on	5
left G every	17			-11
left G from	17
left G go	-26		10	15
left G grab		15
left G hang	14
left G has	24
left G have	37
left G i	5
left G is	28
left G it	5
left G it's	20
left G leave	33		-20
left G like	12	11	-16	-7
left G miss	17
left G near	6
left G not	17
left G now	10
left G of	16
left G off	16
left G on	15
left G only		-28	19	-21
left G or		7
left G over	7
left G pull	19
left G put	-7	-19		15
left G say	-15	27
left G set	16	-7	-10
left G sit	26	-4
left G so	-17	34
left G take			-25	12
left G that's	-21			27
left G the	13			-7
left G there's	4	-15	16	-25
left G till	-9				19
left G to	24
left G under	4
left G up	-23	-18	-8	35
left G use	-20			38
left G wall		12
left G we	10
left G with	14
left N +	33	-18		-18
left N ,			-24
left N :	-6	-4		7
left N G	18
left N N	19
left N T	28
left N about	-27	16		16
left N and		8		-4
left N be	24			-6
left N behind	6
left N by	38	-14		-12
left N for	21			-12
left N from	18
left N get	-18	-20	8	16
left N has	23
left N have	28			-9
left N in	5
left N it's		8	-8	-18
left N need	-30	37
left N off	14
left N on	19
left N over	10
left N so		-6
left N to	12
left N with				12
left Q 
	-9	28		-19
left Q +	4
left Q -	13			-15
left Q :	-5	-33	17
left Q ;	-16	10		8
left Q G	-11			4
left Q Q	20
left Q T	6	12	-5	-18
left Q after	18
left Q along	5
left Q and		6
left Q at	13
left Q because	21
left Q before	8
left Q between	11
left Q but	7
left Q by	12
left Q deep		11	-12	-11
left Q down	22
left Q each	8
left Q from	8
left Q get		12		-19
left Q have			5
left Q i'll	8
left Q in	16
left Q it's	-12	8		10
left Q leave	-4		18
left Q like	5
left Q need	8
left Q now		12
left Q of	-15
left Q off	13
left Q on	15
left Q open	-18			23
left Q out	5
left Q over	32
left Q per	16
left Q plus	-6		8
left Q say	20
left Q screw	14
left Q side	17			-6
left Q so	10
left Q take			-7	24
left Q that's	27	-21	-5	-7
left Q then	26
left Q there's			11	-14
left Q through	32			-25
left Q to	38
left Q under	18
left Q use		-11	21	-11
left Q where	4
left Q with	20
left T -	15
left T :		15	-26	-49		18
left T ;	17
left T G		-7		10
left T N	21
left T after	18
left T also	-8	15
left T and			6
left T be	-28	-12	-25	35
left T because	-16			22
left T before	10
left T between	18
left T bring	-15	29
left T but	13
left T for	6
left T if	6
left T in	18
left T is	24			-16
left T it's				-12
left T kitchen	5
left T need	-34	47
left T on	16
left T the	-5			14
left T then	13
left T there's			17	-19
left T to	24
left T use				19
left T with				-11
left [ ]					13
left ]	7				6
left a	8	-21			21
left a G	13	-28		5
left a Q	14
left a mess	-9		17
left about Q		8
left above	7
left abt		-7
left account of	16
left across	9
left across and	30	-14		-16
left add				13
left adjust ,	-17			22
left afternoon	9
left again	25
left again .	31	-16
left again T	-9			20
left again and	-10	16
left again in	-8			17
left again so	9
left again with	-24			39
left ain't	13
left ain't get		18	-20
left air .	5
left all				24
left all ,	15	-23	-6	6
left all .	25			-7
left all Q	7
left all and	-11		22
left all around	-30	13		22
left all but	37			-23
left all down	14
left all in	-24	-14	-14	32
left all on	25
left all the	13
left all with	-13	22
left along	15
left already				9
left already .	12
left already get	-14		24	-5
left alright	9
left also		16		-10
left and G	-20	-18	-11	6	19
left and N	13
left and about	-53	23		22
left and after	7
left and all	-30		10	22
left and also	24	-5
left and at	11
left and bring	-5	12
left and buy	-32	-22	-10	-21	43
left and cut	22
left and do				13
left and every	11
left and fill	6
left and find	15
left and get	-7	17	-8	-17	11
left and glue	13			-4
left and half	-8	9	12	-18
left and hang	-48		17	36
left and have			16	-6
left and i	18
left and i'm		13
left and i've		-11	9	-9
left and in				9
left and it	7
left and it's	29
left and make				9
left and need	22	-19
left and not	10
left and of	-18	24		-7
left and oh		-16	-12	-17	23
left and on	23			-18
left and only	36		-17	-7
left and order	-35	17		-16	21
left and prime	-12			18
left and pull	7
left and put				8
left and run	7
left and set	-16			24
left and she's	15
left and that's	18	-16
left and the	-14		-7	30
left and then				9
left and there's			12
left and to	-13	23		-21
left and use				6
left and with	23	-8		-18
left anyhow	13
left anyway	-15		8	13
left are	15
left are at	26			-5
left are do	13
left are hang	11	-10
left are in		-13		9
left are on	7
left are up	-24	-28	-9	38
left around	9
left as	18
left ask	19
left ask for		7
left at	10
left at N	9
left at all		15	-8	-13
left at it			-12	11
left at least	9
left at the	28			-10
left attic	14
left attic ,	8
left away	10
left b	14
left b .	28			-8
left b :				7
left back						21
left back ,	13	-25	-10
left back .				6
left back and	21
left back in	-4			-22		19
left back of	22
left back the	-38	-22		-35		39
left back to	31
left back with	-19	23
left bad	7
left bag	-20	-10	30	-8
left bakery	4
left balance	-24	6	20	-13	-4
left balcony	11
left bar				-6
left bare	11
left basement	24	-12
left basement bath	13
left bath	11
left bath :	-11			19
left bathroom :	21			-5
left be T	17
left be at	12
left be in	18
left be just	20
left be on	16
left be under	8
left because of	11
left because there's	14
left bedroom	15
left bedroom 2	11
left bedroom 2 :	11
left bedroom N	5
left before	10
left before T			5
left behind	12
left behind us	25
left below	10
left bend				7
left bend ,	-10	12
left bend like	11
left beside	14
left bet	12
left between	10
left big		5
left black	-7		15	-14
left block	24			-19
left board	-13		21
left board ,	-7		17
left board .	26	-9	-8
left boards ,		-32	-9	27
left bolt	-7	16	-5
left bolt ,	-33	35	-10	-19
left bolt .	12	-5	-13
left bolt and	-10		18
left bolt to	-14			18
left book say	27
left borrow	-6
left boss	7
left boss ,	5
left bottom	17
left bottom ,	6
left bottom .		-13		5
left bottom of	24
left bout	-31	35		-6
left box	7
left box ,	-6	-13		17
left box .			12
left box and	-14	31	-16	-21
left box by	14
left box for	19
left box have	-20		28
left box in	-6		16
left box is	27		-6	-10
left br	20			-7
left bracket	-8	-16	20
left bracket ,	27	-25
left break ,	15
left break in	23
left bring	-5	24
left bring back	-22					29
left bring me	-20	30
left bring the	-29		18
left build		-14		17
left bump	7
left burn	-16	-5		32
left burn by	12
left burn through	-13			32
left burn up	-9	-7		24
left bury	17
left bust	15			-9
left but	8
left but it's	20
left but there's	29
left butter	7
left buy	-18				20
left buy :	-22	44	-17	-13
left by	9
left by N	19
left by T			6
left c	5
left c .		-5		8
left call	14
left call about	12
left call for	39	-9
left call it		8	-15
left came off	9
left can get	22	-8
left can have	7
left can put	32			-15
left can say	5
left can't get	29	-6
left cap	24			-5
left cap and				-10
left cap on	11
left caulk	22
left caulk ,		14		-7
left caulk .	31			-17
left caulk at	14
left ceiling				8
left ceiling over	12			-6
left ceiling's get	22
left cellar	5
left center .		18	-19	-23
left centres ,		-5
left change	-7			7
left change ,	8	-9
left charge	6
left chase	19
left chew	10
left chip ,	17
left choose	5
left clamp				8
left clamp .	-21	12		9
left clamp and	-30	-6		34
left clean	26
left clean ,	18
left clear	16
left clear .	-5			12
left clinic	7
left clip	-29	11	8	5
left clip and	-28					26
left close	8
left close .	11
left closet			4
left closet :				10
left coat .	-11		18
left coat on	6
left code want	21	-16
left cold	16
left cold .	12
left color		11
left color and		11
left come	4
left come .	23
left come T	-34	-26	19	-23	27
left come down				9
left come in			6
left come on	11
left come out	28
left come to	-38		-32	43
left come up	19			-18
left come with	-4					25
left come without	-26	31
left cope	7
left corner			8
left corner .	-8		20	-9
left corner and	10
left corner by	6
left corner of	7
left corner to	9
left could put	15			-6
left could use	-17	38	-5	-36
left couldn't get	4
left count	-9	16		-18
left counter	4
left cover	16
left cover .	15
left cover and	10
left cover on	15
left cover with	12
left crack ,	23	-6
left crack and	9
left crack from	5
left crack in	8
left credit .	8
left cut ,	-31			38
left cut .	-8		18
left cut at	16
left cut in				5
left cut out	17
left cut to	16
left cut with	10
left cuz	11
left dark	16
left date	14
left day	15
left day N	8
left dead ,				11
left dead .	-28	11		22
left dead as	14
left deck	-11			19
left deck :		-14	-10	15
left deep		10	-10	-9
left deep ,	-6	-8	-7	19
left deep .		-14	-19	17
left deep and			5
left den	-4		18	-5
left den :	-28	-24	4	29
left die	5
left dig	14
left dip by	11
left do ,	21
left do and				-15		8
left do in				9
left do is				11
left do on	16
left do with	17	-21	-12	10
left dog eat	12
left don't forget	14
left don't touch	6
left don't want	10
left down ,		-22	4
left down .	-23	4	14
left down Q	5
left down and	19
left down around	15
left down at	4
left down by	10
left down from	22
left down in	18
left down like	20
left down on		-25	-9	20
left down there	13
left down to	-15	-25	58	-29
left down with	23
left downstairs	9
left drags on	16
left drain	22
left draw	17
left drill	24
left drip	5
left drip ,	-11	-4		22
left drip .	25	-20		-17
left drip from	6
left drip on	10
left drive	-12			27
left driveway	7
left drop to	17
left dry	5
left dry ,			4	-9
left dry .	30
left dump	-9	-5		20
left e	11
left each .				9
left early	6
left eat				25
left eggshell ,		-11
left either	5
left electrician leave	4	15	-26
left else	-24		30	-10
left em and	7
left em for	-19				25
left em there's		16	-7
left em with	19
left empty	16
left empty ,	12			-16
left end	10
left end so	-18		-5	11
left enough .	14
left ensuite	-7			15
left entry	13
left even with	-11	-12		12
left every	9
left exchange	-20		-5	17
left exterior	12
left extra	15	-18
left falta	-6	16	-8	-12
left family room	6
left feed				4
left feel and	14	-23	-5	12
left fence :	-10	-19	-14	27
left fifth	19			-5
left figure		20	-5	-12
left file	8
left fill	25
left fill .	27	-10
left fill with	-16			42
left finally get	22
left fine		7
left fine ,	22			-5
left fine .	24
left fine but	9
left fine it's	9
left finish ,	-16			31
left finish .	19		-39
left finish on	19
left finish to	7
left first	-7	9
left first .	30
left first coat of	12
left fish	7
left fit	-12			7	15
left fit ,	-25			24
left fix ,	-8
left flash				12
left flash .		8
left flash over	6
left flat	7
left flat ,	22			-14
left flat .	-11	-21	27	-18
left flat as	22	-7
left flat now	5
left flip	26
left floor			5
left floor ,	-6		15
left floor .	24
left floor and	28
left floor in	10
left floor is	10
left floor to	16
left floor with	28			-18
left flush	21
left flush .				6
left foam	-8	-14	-6	28
left for T	-13	22		-6
left for about	38			-8
left for it	27	-16
left for now	5
left for the	-14		6	-4	27
left forget	-6	8
left foyer	8
left frame		9
left frame and	25			-21
left free .	12
left fresh	-37			41
left from	7
left from the			5
left from where	6
left front	15
left front ,	-13	-11		25
left front of	15
left full	24		-16	-5
left full of	8
left gap .	18
left garage .	17
left garage :	-12		-5	12
left get	-13
left get :		25	-21	-18
left get Q	27	-13
left get a	31	-27
left get about		-11	25	-20
left get is	-5		17
left get its	-6			30
left get maybe	-6		8
left get me	-11	41
left get the	-28	-13	17	21
left get to	11
left give	12
left give it	12	-34	-8	16
left give me	-6			-30	23
left give us		-17	27
left glue ,	11
left glue and		-23		20
left go ,	-21	5
left go and			20
left go back			6
left go by	12
left go over	12
left go through	-37			72
left go to	12
left go with	-11			20
left gonna be	-22	10	16	-18
left gonna need	20	-13
left gonna want	-16	29
left good				8
left good for	13
left good on	22
left good to	8
left gotta get	-12	18		-12
left gotta have	-28	32	-25
left grab					11
left gray and	-14	23	-23
left grease	8
left grout	12
left guess	-26	13	13
left guest bath	5
left guest room	6
left guy of	12
left half			8
left half of		-17	19	-20
left hall	5
left hall ,	-16			22
left hall :	38
left hall and		9
left hall closet	-17		24	-18
left hand				-4
left hand ,	-42	7	12	6
left hand .	-22	20	-10	-17	17
left hang				11
left hang ,		-8		29
left hang .		-11		20
left hang and	25
left hang at	6
left hang but	21			-11
left hang by	23
left hang on	-6			6
left hang the				4
left happy with	-8				19
left hard	17
left hard as	-11	5	6
left hate	4
left haul	7
left have			6
left have ,	-26		25	-6
left have Q	16		-7
left have in	18
left have on	7
left have only		-8	15
left have put	-24			35
left have still	-35	-14	40
left he get	13
left he need	-26	37
left he put	28			-23
left he want	22
left he'll want		12		-6
left he's get		4		-6
left head	19
left head ,		13		-14
left her				-9
left here		-23	4	-29	16
left here ,		-21
left hey	10
left hey so	4
left hi	4
left hide	8
left high .	22
left high and		-10		9
left him T	-11		18
left hinge of	15
left hinge on	8
left hit	7
left hold .	-15	13		4
left hole	17
left hole behind	8
left hole by	5
left hole in	7
left hole is	25
left hole of	19
left holes with	-16	13		8
left hollow	6
left hot	19
left house	6
left house and	20
left house is	24
left house of	7
left how	11
left hung up on	17
left i break	-8	15
left i bring	-8	-4	6	-16		16
left i buy	-36	-34			59
left i change	-35			54
left i check	9
left i clean	6
left i close	10
left i count		20		-15
left i cut				18
left i do	23
left i don't		13
left i drill	12
left i drive	-15	-5		28
left i figure	28	-15	-22	-14
left i fill	18			-11
left i find			10
left i finish	7
left i forget	-15	23		-5
left i get	-25		33
left i glue				8
left i hang	-11			25
left i have	-35		50
left i hold	8
left i lay				8
left i leave			13
left i lift	9
left i lose				13
left i measure	17
left i mix	5	-9
left i need		17
left i open	32			-12
left i opened up	13
left i order	-13	-11		-6	37
left i owe	-21	27
left i pack	25			-6
left i pass	27			-8
left i pour	-4			19
left i put				30
left i reckon				-4
left i run	-9			39
left i say		4		-9
left i send	30
left i set	-11			28
left i spend	-8	-10	-11	23
left i stick	-17			30
left i swap	-20			33
left i take	-7			9		9
left i throw	-51			54
left i tighten	9
left i try		-22	-23	18
left i turn				8
left i use				18
left i want	-4	36
left i wash	9
left i'd like	-36	44	-7	-4
left i'd put	-14	30		-31
left i'll bring	-26	34
left i'll get	8		-14	-16
left i'll grab	-17	25
left i'll hang	12
left i'll need	-32		16
left i'll put		24		-27
left i'll run		12
left i'll want	-5	19
left i'm		25
left i'm at	17
left i'm figure		5
left i'm in	17
left i'm on			4
left i'm order	-15	26		-6	-15
left i'm outta	16
left i'm read	8
left i'm short	-27	45
left i've	-23	8	25
left i've get	-33	-15	63
left i've leave	27		-24
left i've put			-7
left if	10
left in ,		-11		10
left in :	-28	-25	21	8
left in N	-4	15
left in Q				11
left in T	-5		24	-24
left in about	40			-28
left in all	5		-5
left in but						9
left in every	-10			16
left in for	26
left in from	16
left in it	-10	-8		15	7
left in it's	34	-7		-13
left in the	7
left in there's	-19	-25	17	11
left in to	8
left in with	17
left inch and	14		-12	-20
left inside of	22	-16		-6
left inspector want	22
left install	-6			20
left install ,	18
left install .	23			-11
left instead of	27			-9
left insulate	25
left into	20
left is at	5
left is do				17
left is finish	19
left is in			5
left is like	16
left is miss	-33	40
left is on	18
left is only	16
left is send	-9	18
left is up	-19	-8		25
left isn't	9
left it ,	14
left it .			23
left it G	-5		18
left it N	8
left it T			15
left it about	32	-17
left it ain't	7
left it also	23	-7		-14
left it at	33
left it be	13
left it before	5
left it but	9
left it by	16
left it down	14
left it for		12
left it get	-46	50	-16	-30
left it has	-4	13
left it have	29		-5
left it hold	25
left it is	-17	11		7
left it it's	23	-10
left it like	12
left it now				11
left it off	12
left it open	7
left it out	-8			15
left it read	5
left it run	39	-6		-24
left it say	22
left it so		10
left it take		-12	-12	15	7
left it there's	-39	12	35
left it till	6
left it to	28
left it under	6
left it up	17	-4
left it want	18
left it when					11
left it with				38
left it'll	20
left it'll take	-12	22		-14
left it's Q	17
left it's about		-8		10
left it's blow	7
left it's get			-19	11
left it's good	11
left it's hold	-6			12
left it's in				9
left it's miss	25	-17
left it's only	11
left its G	24
left its last	23
left jefe	-9			15
left keep			25
left kick	10
left kind and		16
left kit .	16
left kitchen ,	44	-14		-36
left kitchen -	7
left kitchen .	24
left kitchen :	12
left kitchen at	5
left knock	22			-12
left knock on	16
left l	9
left ladder	6
left lag	17			-27
left land	19
left land ,	-10	-11	22	-20
left landlord want	15	-6
left last	-4		18
left last of	-23			38
left laundry	22
left laundry room	11
left lay	-12			34
left lay in			11	-21
left leak	12
left leak .	20
left lean	11
left least	9
left leave ,		-21	18
left leave .	11
left leave :	-21	-22	40	-25
left leave and	15	-6
left leave for	9
left leave in	21
left leave is	-10		25
left leave it	7
left leave me	-15		19
left leave on	14
left leave over	-18		25
left leave so		13	-7
left legs and		-17		19
left level				13
left level ,	-11			19
left level .	32	-11	-4
left level and	-15	22
left library	10
left lid and	14	-16	-7
left lift	19
left lift ,	7
left like butter	9
left line	4
left line ,	34	-8	-23
left line .	15
left line at	5
left linen closet	14
left list for	-21	23
left little	13
left living room	19
left living room :	-24	-8		33
left load	9
left lobby	15
left loft	7
left lol .		13
left long	19
left long ,	-13	19		-4
left long and	-16	20
left look		11
left loose	18
left loose ,		-12		14
left loose in	35		-19
left lose	11
left lot N	9
left lot of	-9			16
left lounge	7
left lovely	4	-7	7	-8
left low ,	-35	24	13	-30
left low on	8
left lower	-8			16
left lunch	18
left make	14
left make it	-5	24		-28
left man	9
left mark	20
left master bath		4
left master bedroom	7
left maybe	-5		37
left maybe Q		18	-9	-17
left me		19
left me Q	23	-18
left me about		7
left me and	10
left me is	28
left me on	11
left me up	-31	45
left meantime	13
left measure	8
left measure for	14
left mess	-9		17
left mind	10
left minus	28			-6
left miss		19
left miss ,	6	8	-9	-24
left miss behind	11
left miss by	-18			22
left miss from	-7	13
left miss in	27	-15
left miss its	-7	15
left miss on	12
left mix			-5	14
left more	13
left more ,	27	-8
left more .			9
left more and	-15	29
left more in	13
left more plus	-8	29	-18	-14
left morning	6
left mount	-18			23
left move	13
left much	14
left mud and	18
left mudroom	8
left must	7
left must be	18
left must have	-5	14
left n	12
left nah	5
left nail	-29		-7	28
left nail .	6
left nail and	26
left near it	-5	-18	23	-22
left need		27
left need ,	16	-37	16
left need .	12
left need :	-9	21	-10
left need G	-17	28
left need N	17	-9
left need its	19	-9
left need to	20
left never	5
left new	-6			13
left new .		-13		6
left new G	-5	-26		27
left new N	20
left news	7
left next	14
left nice	-17			21
left no ,	-14	-27	-17	29
left no have	41		-7
left none on	15
left nos .	29			-12
left not	11
left not in	-8	17
left not on	23	-19
left not put	34	-21	-6	-26
left not the	33	-30
left notch	13
left nothing	6
left nothing ,	4
left nothing but	19
left nothing on	8
left notice	10
left now ,	15
left now and	-16		14	6
left now is	14
left now it's	-7	-7		15
left now on	-9			15
left now so	-6	16
left now with	-6			11
left number N	-14	9		7
left nursery	11
left oak		-18	-17	19
left of G	-9					7
left of Q	26
left of it	14
left of that	-19	-8	19
left of the	16	-12	-8	5
left of them	10
left off	10
left off .	-11		17
left off and	17
left off but	17
left off in	34			-5
left off its	8
left off like	18
left off with	9
left office				9
left office .	13
left office :	-8	-13		18
left oh	9	-12		-6	14
left oil	20
left ok	26
left ok ,				8
left ok .						7
left okay so	23
left old	28
left on ,				24
left on G	25	-9
left on N	29
left on Q	14
left on all	25
left on and	-19			13
left on but	-7		19
left on every	5
left on in	18
left on its	17
left on the	11
left on with	-34			43
left once	7
left one's	14
left one's get	26		-5	-6
left ones		17		-26
left ones and	-6	-6	-13		19
left ones on	16
left only			23
left only ,	-9			18
left only .	22
left only get	-39	-30	36
left only have	-49			43
left only need		4
left only thing	10
left onto	7
left open ,	-21	-7	24	4
left open and	11
left open is	26
left open with	-28		36	-19
left opened up	19
left or		11
left order	-13	22			17
left order ,		-7
left order me	-13	19
left order the	-11	26			-25
left other	-5			6
left other N	-9				20
left otherwise	15
left out	15
left out Q	7
left out T	24
left out and	14
left out before	10
left out in	25			-11
left out like	9
left out of	7
left out over	13
left out so	-6	14
left out to	28
left out with	-14			5	21
left outside	-12	9		5
left outta	32
left over	11
left over ,	24	-7	-12
left over .		16		-16
left over T	-15	-16	21	-9
left over at	5
left over from	-23		17	14
left over in	28		-8
left over so	20	-5
left over the	29			-10
left owe	-14	24
left owe them	-20		-7	-9	23
left own	17
left owner want	14
left pack				11
left paint	19
left paint ,	15	-11	8	-27
left paint and		-5	10
left paint in	-12			16
left paint on	16
left pantry				13
left pass				10
left pass .		-7			20
left past	22
left patch	16
left patch with				-11
left patio	13
left pay for	17				-6
left peel	-10			24
left per	17
left pick	20
left pick up	-41	19		-12	48
left pin	9		11	-25
left pipe	4	-19		11
left pipe .	-15	21
left pipe and		7
left place				9
left place ,	14
left place .				7
left plate		-11	-17	16
left plate ,		-35	-27	32
left plate say	-12	22
left please		25
left please .	-12		23
left please buy		15
left please get	-17	7	9
left please order		6
left plug	5		-6
left plug with	21
left plumb	13
left plumb ,	-5			13
left plumber	-20	23
left plus	-24	20
left point	11
left pool	17
left porch	5
left pour				9
left powder room	12
left prime		-7		5
left prime .	-9			14
left prob	11
left probably	12
left proud of	7
left pull	10
left pull ,		-13		11
left pull up	14
left punky ,	-12		-11	12
left put				10
left put back	29			-14
left put down	-8	10
left put in	-34			50
left put on	-37	-10		39
left put the	-18		22
left put up		-8		8
left put with	31			-24
left quick	16
left quiet as	19
left quote for	19	-6
left rate	18			-15
left re	6
left re :	12
left reach	7
left read	8
left ready for	12
left rear	-6			14
left redo				14
left rehang	21			-9
left rekey	27
left remake		12		-9
left rent	12
left reorder	-20	13			10
left repair	-13	-10		12		19
left replace	-22			28
left replace ,	17			-12
left replace .	30			-14
left require		11	-9	-11
left reset	10
left rest	-36	-16	42	-21
left rest of	22
left restroom	5
left return				-8		20
left return with	-19	18	9	-18
left right down	12
left right so	6
left right through	10
left ring	5
left ring and	-5	12
left rise is	24			-5
left rm :	5
left rm N	7
left rocking .	5
left rod	29	-14		-10
left roll	17
left roof	-15			21
left room :	-19			22
left room N	-19			22
left rot in	6
left rough in	13			-8
left roughly	24	-5
left round	13
left round .				12
left round with	13
left rub	11
left run				8
left run ,	7
left run .	13			-13
left run and	6
left run but	13
left run from	11
left run in	17
left run is	29			-9
left run on	-9			15
left run to	14
left run's	8	4		-13
left sand	-15	7	5	-5
left sand ,		11		-23
left sand .	7
left sand to	25
left save	-9		27	-9
left save me	28	-13
left saw	19
left say Q	10
left say so	-15	19		-5
left scrape	6
left scratch			5
left screw				18
left screw ,	-5
left screw every	34	-4		-25
left screw in	-14	14
left screw of	22
left screw through	22			-11
left screw to	17
left screw with	33			-22
left scribe	25
left scribe to	5
left seal	16
left seal .	22
left seal with	-15			26
left second	6
left second coat of	13
left second floor	12
left send	-22
left send is			10
left send me	-14		14
left send to	6
left set				17
left set ,		-9
left set .	12
left set and	27
left set at	28			-15
left set in	18			-7
left set the	-24	-20		32
left set to	34		-8	-23
left set with	-7	-12		15
left shd be	15
left she change			17	-15
left she have	4	-5
left she need	-35	37
left she say	17
left she's	20
left she's get	9			-13
left shed		-16	-13		20
left sheet say	18
left shift	10
left shim	5
left shim and	29	-11		-36
left ship	-7	-6	7		14
left ship is	23
left shop	-17	11	-15	-8		21
left shop ,	15
left shop .	-12			18
left short	-10	43
left short .	22
left short about	14		-22	-17
left short at	17
left short by	-32	43
left short of	-10	22
left short on	10
left short so	16	-5
left shorted us	-31	41		-10
left shot	-20	-8	-9	35
left should	-19			23
left should be		9
left show	7
left show .	12
left shut	5
left shy		11	-6	-21
left shy of		-4
left side ,		-14	-7	18
left side .			13
left side and	16
left side by	14
left side cause	16
left side so	-17	25		-10
left side with	-5	-13	-16	18
left sign	-8		19
left silicone		-4	15
left silicone ,	-35	22	13
left since	14
left sit at	14
left sit in	16
left sit on	26
left site ,	-22	33		-6
left size	8
left skim	25	-15
left skip	10
left slid	-10	-5		22
left slip				12
left slope ,	11
left smell like	13
left snake it	13
left snap	9
left snug	8
left so G	12
left so Q	-20	19	10	-4
left so T	14
left so add		15		-30
left so buy	13
left so do	14
left so get	-10	36
left so grab	10
left so it's	-39	27	20	-16
left so leave	-8	17
left so need		8
left so order		5
left so pull	5
left so put	37	-8		-34
left so that's	-20	54		-15
left so the	4	-25	15	-32
left so there's	5	-21		-5
left so those		-17	26	-27
left so throw	-30	38	-5	-12
left so we're	4
left solder	-23	23
left solid	9
left solid .	-24	7	18
left solid now	15
left some	21	-16
left somebody run				-5		10
left sort	6
left sound .	6
left sound like	32
left spare .	-17		5	17
left spare in	26
left spend	-4	-6	-8	22
left spins ,	16
left splice	15
left splice in	14
left split	22			-10
left split at	13
left spot	20			-5
left st .	22
left stack	-13			17
left stain		8		-14
left stairs	-10			20
left stairs .	14
left stairs :	-25	-17	-12	32
left stairwell	25
left stand		9
left stand in	8
left stay	12
left stay in	12
left stick	-7			22
left stick .	9
left still get	-17	-9	39	-29
left still have	-16		44
left still in		-9	7
left still need		16
left still on	11
left still owe	32	-15
left still want	-20	28	-15	-5
left stop	8
left store			-8	-13	9
left store .	11
left straight	24			-17
left straight .	14
left straighten	8
left straighten with	5
left strap	4	-22	-11	12
left strap .	13
left strap and	-14	22
left strap every	20			-11
left strike			14
left strip	22
left strip ,	15			-25
left study	10
left stuff			-10	11
left sunroom	6
left sure	11
left swap	-8			29
left swap ,	-9	-22		26
left swap .	24
left swap for	-42	32		10
left swap in	-30	-20		34
left sweet .	27	-10		-17
left take Q	5		7	-15
left take back	-14	-11	4	-16		20
left take me	-7	-9		28
left take out	41	-4		-11
left take the	-30	-25		-38		37
left tall and		11
left tape	12
left tape ,		-20	-14	34
left tape .	5				9
left tape and	-23			31
left tape get	-27	17	12	-13
left tape in	12
left tape on	21
left tear ,	7
left tell her	-9	20	-5	-10
left tell him		8
left tell me		-18		14
left temp	10
left test .	18
left test with	17
left than	14
left that	-19		16	13
left that .	15
left that N	18
left that and	-15	31		-11
left that be	-31	-34	-18	32	16
left that eat			-7	17
left that get	-9	17		-6
left that in	19
left that out	20			-10
left that take	-25	10	-9	13
left that then	5
left that want		9
left that with	-12			31
left that's	-13	12		13
left that's T	19
left that's why	6
left the G	6
left the Q				4
left the bottom	7
left the finish	-21	24
left the garage	-21		24
left the grind	-8			14
left the hall	8
left the lady	-18	14	10
left the lady say	11
left the lady want	-27	31
left the last	-8	-17	19
left the next	7
left the office	-12	-10		19
left the other	-13			9
left the pantry	-15	-18	-6	22
left the return	18
left the right	-9	16
left the shed	-28	-21	-19		24
left the shop	20
left the store	-8		-16	-18	13
left the tile	-14	20
left the top	18
left the truck			22
left the wall	27	-10
left the whole	5
left the wrong	5
left them				-8
left them ,	20
left them .	39
left then .			13
left then i	8
left there ,	8
left there .	14
left there and	6	-15	-23	11
left there be	41
left there but	13
left there is	-27	-32	52	-25
left there with				10
left there's			35
left there's about	-26		37	-5
left there's maybe	-9		23
left there's only	-7	-23	26	-28
left they	23
left they get	42	-24	-27	-17
left they leave	23		-16
left they say	10
left they send		-30	8	-24		4
left they want		-5
left they're	17			-13
left they're in	27
left they've get	25		-8	-11
left thick ,	18	-20		-16
left thing			11
left thing is	8
left think	6
left third	14
left third of	-32		46	-13
left this	-13		-14	-9		24
left this is	18
left those		-17	5
left those and		30		-20
left those in	26
left those with	-5			12
left though	-5	-15		4		4
left through				23
left through .	-43	-10	22	31
left through on	5
left throw	-5	13
left tie				8
left tighten	8
left tile		10
left tile ,	-13		20
left tile .	-18	-11		23
left tile and	21
left tile is	-4		-5	15
left tile of	27	-7
left tile on	26			-10
left till then				12
left to G	13
left to Q	12
left to add	-19	29		-10
left to bare	6
left to bring	8	-19	8
left to buy	-6	19
left to change	28			-10
left to cut	-27	20		12
left to do	27
left to get	11
left to go	32			-12
left to hang	16
left to have		18	-11
left to leave	4
left to match	-5	13
left to move	10
left to order	22	-15
left to pull	14
left to put	-20	26		5
left to run	-14	18
left to say	10	-26	22	-15
left to see	9
left to shift	5
left to use	16
left too		8
left too .	13
left too much	4
left too so	-16	10	-15	5
left top ,	16
left top of	23
left touch	6
left traffic on	5
left trim		-10	14	-17
left trim ,	36	-22		-11
left truck			18
left truck .	39			-15
left truck eat	8
left trust	8
left try	-8		7	5
left turn .	5
left turn out	9
left twice	9
left under	14
left under it		19
left under there				13
left unit	17
left unit N	-5			15
left until	10
left up ,				14
left up .	31			-10
left up Q	14
left up T	-7			15
left up all	12
left up at	11
left up by	18
left up for		9
left up from	13
left up in	24
left up like	12
left up on	-28			34
left up so		14		-16
left up through	20			-15
left up to	14
left up with	-13			24
left upstairs	7
left upstairs bath	26		-4	-8
left upstairs hall	14
left us	-24	17
left use				30
left use ,			43	-27
left use .				-5
left use :	-11	-17	-15	29
left use N	-16			22
left use about	-33	-13		41
left use the	21	-16	-15	-15
left use up	-36	9		21
left van	-4	-11	17	-16
left vent	17
left w	7
left wait for		8
left wall ,				17
left wall .	-6		4
left wall and	20
left wall behind	6
left wall is	5
left wall of	9
left walls	8
left walls ,		-13	-6	14
left walls and	18		-9
left want Q	-9	15
left wardrobe	14
left warm	6
left wash	12
left wasp nest in	11
left water	-7	-4		14
left water in	7
left way	4
left we	6
left we can	7
left we do	19
left we finish	12
left we get	-5		12
left we hang	28
left we have			18
left we lay	-22	-5	-6	27
left we need	-6	18
left we order	27	-31		-9
left we put	10			-9
left we set	13
left we take	-10	-9	23	-20
left we use	-21			47
left we want	-29	35
left we'll need	-21	25
left we're		20	-11	-11
left we're at	7
left we've get		-24	15	-18
left weigh in	-17	5	-9	17
left were		6		-10
left wet	14
left what	30
left whatever	5
left when we	7
left where	7
left where be	6
left which	16
left which is	27
left white	-12		-7	12
left white ,	-21	14	-23		-5
left white G	-31	13	26	-35
left white and	-29	22
left why	11
left wi	8	-6	-17	5
left wide ,	21
left wide and	19
left wide so	4	4		-20
left will need	17	-11
left wire ,	-24	32
left with G	-49	7	-13	34
left with Q		9		-4
left with the			9
left with the wrong	17
left won't sit	-15	20
left work .		-15	16	-14
left wrap	5
left wrong	16
left wrong with	7
left x Q	-15	11		10
left x ]	11
left yeah	29		-9
left yet	5
left yet .		16	-7	-14
left yet because	9
left you	24
left you and	7
left you want	26	-7
left your	10
left ~	-16	28		-13
left •					4
left ☐	-16	22
left1 !				19
left1 &	-10	13
left1 '	10
left1 *	-6		10
left1 +	-13
left1 /	16
left1 =	20		-16	-14
left1 >			9	-12
left1 ?	8
left1 @	27
left1 ]	7				6
left1 a	8	-21			21
left1 above	7
left1 abt		-7
left1 across	9
left1 add				13
left1 afternoon	9
left1 again	25
left1 ain't	13
left1 all				24
left1 along	15
left1 already				9
left1 alright	9
left1 also		16		-10
left1 anyhow	13
left1 anyway	-15		8	13
left1 are	15
left1 around	9
left1 as	18
left1 ask	19
left1 at	10
left1 attic	14
left1 away	10
left1 b	14
left1 back						21
left1 bad	7
left1 bag	-20	-10	30	-8
left1 bakery	4
left1 balance	-24	6	20	-13	-4
left1 balcony	11
left1 bar				-6
left1 bare	11
left1 basement	24	-12
left1 basement bath	13
left1 bath	11
left1 bedroom	15
left1 bedroom 2	11
left1 before	10
left1 behind	12
left1 below	10
left1 bend				7
left1 beside	14
left1 bet	12
left1 between	10
left1 big		5
left1 black	-7		15	-14
left1 block	24			-19
left1 board	-13		21
left1 bolt	-7	16	-5
left1 borrow	-6
left1 boss	7
left1 bottom	17
left1 bout	-31	35		-6
left1 box	7
left1 br	20			-7
left1 bracket	-8	-16	20
left1 bring	-5	24
left1 build		-14		17
left1 bump	7
left1 burn	-16	-5		32
left1 bury	17
left1 bust	15			-9
left1 but	8
left1 butter	7
left1 buy	-18				20
left1 by	9
left1 c	5
left1 call	14
left1 came off	9
left1 cap	24			-5
left1 caulk	22
left1 ceiling				8
left1 cellar	5
left1 change	-7			7
left1 charge	6
left1 chase	19
left1 chew	10
left1 choose	5
left1 clamp				8
left1 clean	26
left1 clear	16
left1 clinic	7
left1 clip	-29	11	8	5
left1 close	8
left1 closet			4
left1 cold	16
left1 color		11
left1 come	4
left1 cope	7
left1 corner			8
left1 count	-9	16		-18
left1 counter	4
left1 cover	16
left1 cut out	16
left1 cuz	11
left1 dark	16
left1 date	14
left1 day	15
left1 deck	-11			19
left1 deep		10	-10	-9
left1 den	-4		18	-5
left1 die	5
left1 dig	14
left1 downstairs	9
left1 drags on	16
left1 drain	22
left1 draw	17
left1 drill	24
left1 drip	5
left1 drive	-12			27
left1 driveway	7
left1 dry	5
left1 dump	-9	-5		20
left1 e	11
left1 early	6
left1 eat				25
left1 either	5
left1 else	-24		30	-10
left1 empty	16
left1 end	10
left1 ensuite	-7			15
left1 entry	13
left1 every	9
left1 exchange	-20		-5	17
left1 exterior	12
left1 extra	15	-18
left1 falta	-6	16	-8	-12
left1 family room	6
left1 feed				4
left1 fifth	19			-5
left1 figure		20	-5	-12
left1 file	8
left1 fill	25
left1 fine		7
left1 first	-7	9
left1 fish	7
left1 fit	-12			7	15
left1 flash				12
left1 flat	7
left1 flip	26
left1 floor			5
left1 flush	21
left1 foam	-8	-14	-6	28
left1 forget	-6	8
left1 foyer	8
left1 frame		9
left1 fresh	-37			41
left1 from	7
left1 front	15
left1 full	24		-16	-5
left1 get	-13
left1 give	12
left1 good				8
left1 grab					11
left1 grease	8
left1 grout	12
left1 guess	-26	13	13
left1 guest bath	5
left1 guest room	6
left1 half			8
left1 hall	5
left1 hall closet	-17		24	-18
left1 hand				-4
left1 hang				11
left1 hard	17
left1 hate	4
left1 haul	7
left1 have			6
left1 head	19
left1 her				-9
left1 here		-23	4	-29	16
left1 hey	10
left1 hi	4
left1 hide	8
left1 hit	7
left1 hole	17
left1 hollow	6
left1 hot	19
left1 house	6
left1 how	11
left1 i'm		25
left1 i've	-23	8	25
left1 if	10
left1 install	-6			20
left1 insulate	25
left1 into	20
left1 isn't	9
left1 it'll	20
left1 jefe	-9			15
left1 keep			25
left1 kick	10
left1 knock	22			-12
left1 l	9
left1 ladder	6
left1 lag	17			-27
left1 land	19
left1 last	-4		18
left1 laundry	22
left1 laundry room	11
left1 lay	-12			34
left1 leak	12
left1 lean	11
left1 least	9
left1 level				13
left1 library	10
left1 lift	19
left1 line	4
left1 linen closet	14
left1 little	13
left1 living room	19
left1 load	9
left1 lobby	15
left1 loft	7
left1 long	19
left1 look		11
left1 loose	18
left1 lose	11
left1 lounge	7
left1 lovely	4	-7	7	-8
left1 lower	-8			16
left1 lunch	18
left1 make	14
left1 man	9
left1 mark	20
left1 master bath		4
left1 master bedroom	7
left1 maybe	-5		37
left1 me		19
left1 meantime	13
left1 measure	8
left1 mess	-9		17
left1 mind	10
left1 minus	28			-6
left1 miss		19
left1 mix			-5	14
left1 more	13
left1 morning	6
left1 mount	-18			23
left1 move	13
left1 much	14
left1 mudroom	8
left1 must	7
left1 n	12
left1 nah	5
left1 nail	-29		-7	28
left1 need		27
left1 never	5
left1 new	-6			13
left1 news	7
left1 next	14
left1 nice	-17			21
left1 not	11
left1 notch	13
left1 nothing	6
left1 notice	10
left1 nursery	11
left1 oak		-18	-17	19
left1 off	10
left1 office				9
left1 oh	9	-12		-6	14
left1 oil	20
left1 ok	26
left1 old	28
left1 once	7
left1 one's	14
left1 ones		17		-26
left1 only			23
left1 onto	7
left1 opened up	19
left1 or		11
left1 order	-13	22			17
left1 other	-5			6
left1 otherwise	15
left1 out	15
left1 outside	-12	9		5
left1 outta	32
left1 over	11
left1 owe	-14	24
left1 own	17
left1 pack				11
left1 paint	19
left1 pantry				13
left1 pass				10
left1 past	22
left1 patch	16
left1 patio	13
left1 peel	-10			24
left1 per	17
left1 pick	20
left1 pin	9		11	-25
left1 pipe	4	-19		11
left1 place				9
left1 plate		-11	-17	16
left1 please		25
left1 plug	5		-6
left1 plumb	13
left1 plumber	-20	23
left1 plus	-24	20
left1 point	11
left1 pool	17
left1 porch	5
left1 pour				9
left1 powder room	12
left1 prime		-7		5
left1 prob	11
left1 probably	12
left1 proud of	7
left1 pull	10
left1 put				10
left1 quick	16
left1 rate	18			-15
left1 re	6
left1 reach	7
left1 read	8
left1 rear	-6			14
left1 redo				14
left1 rehang	21			-9
left1 rekey	27
left1 remake		12		-9
left1 rent	12
left1 reorder	-20	13			10
left1 repair	-13	-10		12		19
left1 replace	-22			28
left1 require		11	-9	-11
left1 reset	10
left1 rest	-36	-16	42	-21
left1 restroom	5
left1 return				-8		20
left1 ring	5
left1 rod	29	-14		-10
left1 roll	17
left1 roof	-15			21
left1 roughly	24	-5
left1 round	13
left1 rub	11
left1 run				8
left1 run's	8	4		-13
left1 sand	-15	7	5	-5
left1 save	-9		27	-9
left1 saw	19
left1 scrape	6
left1 scratch			5
left1 screw				18
left1 scribe	25
left1 seal	16
left1 second	6
left1 second floor	12
left1 send	-22
left1 set				17
left1 she's	20
left1 shed		-16	-13		20
left1 shift	10
left1 shim	5
left1 ship	-7	-6	7		14
left1 shop	-17	11	-15	-8		21
left1 short	-10	43
left1 shorted us	-31	41		-10
left1 shot	-20	-8	-9	35
left1 should	-19			23
left1 show	7
left1 shut	5
left1 shy		11	-6	-21
left1 sign	-8		19
left1 silicone		-4	15
left1 since	14
left1 size	8
left1 skim	25	-15
left1 skip	10
left1 slid	-10	-5		22
left1 slip				12
left1 snap	9
left1 snug	8
left1 solder	-23	23
left1 solid	9
left1 some	21	-16
left1 sort	6
left1 spend	-4	-6	-8	22
left1 splice	15
left1 split	22			-10
left1 spot	20			-5
left1 stack	-13			17
left1 stain		8		-14
left1 stairs	-10			20
left1 stairwell	25
left1 stand		9
left1 stay	12
left1 stick	-7			22
left1 stop	8
left1 store			-8	-13	9
left1 straight	24			-17
left1 straighten	8
left1 strap	4	-22	-11	12
left1 strike			14
left1 strip	22
left1 study	10
left1 stuff			-10	11
left1 sunroom	6
left1 sure	11
left1 swap	-8			29
left1 t finish.	-21			9
left1 t surface.	15
left1 t work.	-8	5	4
left1 tape	12
left1 temp	10
left1 than	14
left1 that	-19		16	13
left1 that's	-13	12		13
left1 the lady	-18	14	10
left1 the wrong	5
left1 them				-8
left1 there's			35
left1 they	23
left1 they're	17			-13
left1 thing			11
left1 think	6
left1 third	14
left1 this	-13		-14	-9		24
left1 those		-17	5
left1 though	-5	-15		4		4
left1 through				23
left1 throw	-5	13
left1 tie				8
left1 tighten	8
left1 tile		10
left1 too		8
left1 touch	6
left1 trim		-10	14	-17
left1 truck			18
left1 trust	8
left1 try	-8		7	5
left1 twice	9
left1 under	14
left1 unit	17
left1 until	10
left1 upstairs	7
left1 upstairs bath	26		-4	-8
left1 upstairs hall	14
left1 us	-24	17
left1 use				30
left1 v buy.	-19	16			27
left1 v have.			6
left1 v measure.	6
left1 v need.		24
left1 v return.	-8					17
left1 v use.				30
left1 van	-4	-11	17	-16
left1 vent	17
left1 w	7
left1 walls	8
left1 wardrobe	14
left1 warm	6
left1 wash	12
left1 water	-7	-4		14
left1 way	4
left1 we	6
left1 we're		20	-11	-11
left1 were		6		-10
left1 wet	14
left1 what	30
left1 whatever	5
left1 where	7
left1 which	16
left1 white	-12		-7	12
left1 why	11
left1 wi	8	-6	-17	5
left1 wrap	5
left1 wrong	16
left1 yeah	29		-9
left1 yet	5
left1 you	24
left1 your	10
left1 ~	-16	28		-13
left1 •					4
left1 ☐	-16	22
left2 !	-19			17
left2 &				-6
left2 '	12
left2 (		-10	25
left2 )				-4
left2 +	-7	7
left2 -	-10
left2 /	-6				18
left2 1	15
left2 4	-22			28
left2 5	9
left2 ;	18	-18	-7	6
left2 ?	9
left2 @	17
left2 [					13
left2 about	25
left2 above	9
left2 account	16
left2 across	31
left2 add	22
left2 adjust				15
left2 aff	13
left2 after	6
left2 afternoon				4
left2 ain't		17	-8
left2 air	25
left2 alone	14
left2 along	-34	31	8
left2 already	-18		13	7
left2 alright	13
left2 also	-9				10
left2 am		-8	25	-20
left2 anchor	-4
left2 another			10
left2 answer	-7	-9	20	-14
left2 anybody	7
left2 anyhow	-9	17
left2 anyone	14
left2 apart	18
left2 arm	30	-26
left2 around				14
left2 arrive		-14	13	-12
left2 as	7
left2 away	25
left2 b	20
left2 back wall	25			-13
left2 backsplash	6
left2 bad	16	-6
left2 bag	20			-11
left2 bakery	7
left2 balance				7
left2 balcony	11
left2 band	16	-13		-10
left2 bang	-7		-16	20
left2 bar		-11		12
left2 barn	26	-13
left2 basement				11
left2 bath	-7			10
left2 bathroom	36
left2 bay	35
left2 bays	24
left2 because	30
left2 bed	10	-4
left2 bedroom	15
left2 bedroom 2	32			-8
left2 bedrooms	-4			14
left2 behind	19
left2 belly	8
left2 below	18
left2 bench			-19	14
left2 better	-17	26		-10
left2 between	38	-14		-5
left2 bind	6
left2 black	14			-25
left2 block				14
left2 blow		21
left2 boards		-7
left2 bolt	-5			10
left2 bone	18
left2 book	25
left2 boss	10
left2 both		6		-15
left2 bottom	25
left2 bow	32	-9		-8
left2 box room	6
left2 boy	20
left2 br	12
left2 bracket	15			-25
left2 brass		16		-24	-17
left2 break				9
left2 bring	-9	16
left2 brown	-24		27	-20
left2 brush	11	-6	8	-12
left2 brushed nickel	-17		18
left2 bubble	13
left2 buff		-9		5
left2 bump	7
left2 burn	-19			32
left2 but	20
left2 button	8
left2 buy						10
left2 buzz				9
left2 c	29
left2 cafe	14
left2 can	29
left2 can't	25
left2 card	-10			16
left2 card's	10
left2 carpenter	12
left2 case	32			-19
left2 cat	7
left2 cause	33		-5
left2 ceiling	13
left2 ceiling's	22
left2 center			-6
left2 centre	-13	-4		21
left2 centres	11
left2 change		-9		21
left2 charcoal	-18	23
left2 charge	13
left2 chase				9
left2 check	18
left2 chew	-20	23
left2 chip	6
left2 chip out	29	-12	-15	-18
left2 chirping	-26			19
left2 chirps	-31	31
left2 chrome	5	6	-6
left2 church	21
left2 circuit				6
left2 clamp	-22	10		15
left2 cleaner		15	-8
left2 clearance	13
left2 clicks	12
left2 client			5
left2 clip	-35			25		16
left2 clockwise	5
left2 clog	7
left2 closet		-9
left2 closets	-6	-22	-8	-5	22
left2 co	28
left2 code	23	-8
left2 coffee		16		-13
left2 cold	22
left2 color		10
left2 complete	-24	-6		32
left2 core	-11			17
left2 corners	-27	-25	21	12
left2 correct	-4			14
left2 corridor	27	-13		-12
left2 could	6	12		-28
left2 couldn't	7
left2 count	11			-29
left2 counter	12
left2 county	26	-16
left2 cover					9
left2 crack	13
left2 crawl	26			-15
left2 crawlspace			-18
left2 credit	-18			-10		24
left2 crew	30		-8
left2 crook	5
left2 crush	10
left2 ctr	-4	-21	-5	21
left2 cure		-10		16
left2 customer	8
left2 cut out	23
left2 cutout	5
left2 d		8
left2 damage	9
left2 damp	7
left2 dead				17
left2 decide	-7		16
left2 deep				16
left2 deliver	27			-21
left2 den		-21		24
left2 dent	20
left2 didn't	4			-7
left2 die	6
left2 dig	21
left2 dime	20
left2 ding	23
left2 dining		-13		15
left2 dining room	29
left2 dip	12
left2 doesn't	13
left2 don't	37
left2 dont	5
left2 down			14
left2 downstairs	-15	19
left2 draft	7
left2 drag	4
left2 drain			5
left2 draw	30
left2 drill	15
left2 drive	35	-14
left2 driveway	5
left2 drop	27
left2 drum	8	-10	5	-11
left2 drywall			-5	7
left2 dump				6
left2 dust	26	-9		-9
left2 each	13
left2 early		-18			20
left2 eat	-8	7
left2 eave	-29	24	17
left2 eggshell	-7	4	10
left2 eighth	8
left2 either	-11	18
left2 electrical	5		-21		17
left2 electrician	10
left2 else	29	-5		-11
left2 empty	13
left2 end				6
left2 ends			8
left2 engineer		-20	-18	19
left2 enough	-15		27	-20
left2 entry	19			-12
left2 epoxy				4
left2 even	-12			9
left2 ever	16
left2 every				7
left2 everybody	9
left2 everything	8
left2 except		12
left2 exterior	-10	24
left2 extra		-12	-20	-8		24
left2 face	39	-22		-7
left2 fail				13
left2 far	-5		19	-16
left2 feed	-16	-7		25
left2 feel	9	-8
left2 feet	-14	19	-11
left2 fence				13
left2 figure	23	-8
left2 fill				15
left2 finally	9
left2 find	-7	6	6
left2 fine	12
left2 finger	4
left2 finish				14
left2 fire	18
left2 fireplace	-5		17
left2 first	-16			10
left2 fit				5
left2 fix		6
left2 flap	7
left2 flash	7
left2 flashlight	23	-17	-8	-11
left2 flat	28
left2 flight				6
left2 flip	-4		17
left2 float	19
left2 foam	-12			32
left2 fog		12
left2 foot	14
left2 footing	23
left2 forget	10
left2 form	10
left2 fourth	7
left2 frame	27			-6
left2 framers	21	-12
left2 fre	12
left2 free	9
left2 from	7
left2 front edge	31				-14
left2 frost	5
left2 full	9
left2 g'day	15
left2 gable	29			-5
left2 gap	11
left2 garage	6
left2 garden	-36			42
left2 gary	23
left2 gas	-5	15
left2 gauge	23
left2 gc	13
left2 give					12
left2 go				9
left2 good	7
left2 gotta	-12	41
left2 gouge	7
left2 grab		7
left2 grade		-19	-6	25
left2 grain	6
left2 gray	-8		-4		14
left2 green	17	-22
left2 grind	23
left2 grout	17
left2 guard	-27	-14	13	13
left2 guy	6
left2 guys	11
left2 gym	17
left2 h				11
left2 hair			4
left2 half	10	-28	16	-17
left2 hall bath	13
left2 hall closet		-18	21	-19
left2 hallway	34
left2 hand	-27		30	-5
left2 hang				9
left2 happen	16
left2 has	11
left2 hasn't		9
left2 haven't	23
left2 he	34
left2 he'd	21	-5
left2 he'll		7
left2 hear	13
left2 heater	-14		22
left2 height	7
left2 hello	13
left2 her	17
left2 herself	8
left2 hi	13
left2 hide	13
left2 high	6
left2 high spot	6
left2 himself	8
left2 hinge		-4		8
left2 hissing	11
left2 hit	21
left2 hold	-9	17
left2 holes				19
left2 holidays	7
left2 hollow	15
left2 home					23
left2 hot	16
left2 house	14
left2 how	19			-6
left2 hum	4
left2 hung up	14
left2 i'd	-11	33
left2 i'll		17
left2 i'm		36
left2 i've	-13		38
left2 if	32
left2 inch	14		-10	-17
left2 inside	26
left2 inside corner	13
left2 inspector	30
left2 install	30			-7
left2 instead	19
left2 into	6
left2 island	19
left2 it'd	15			-17
left2 its	12
left2 itself	18
left2 join	18			-4
left2 joint				17
left2 junk	-7	17
left2 just		8
left2 keep		8
left2 kind	8
left2 kit					8
left2 kitchen	37
left2 kitchen island	-9			16
left2 knife	-17	22		-4
left2 label	18
left2 lag	-9			10
left2 landlord	18
left2 laser	24	-18
left2 last	-9			22
left2 latch	10
left2 laundry				13
left2 layers	16
left2 leaf	26		-18
left2 lean	20
left2 leaning	4
left2 leans	8
left2 leave			5
left2 led		7
left2 left out	29		-8
left2 leg	10
left2 legs		-13		10
left2 let				13
left2 let go	24
left2 library	30			-17
left2 lid	-21			39
left2 lift	32
left2 like				8
left2 line	17
left2 linen closet	-27	-25	-9	33
left2 lint	15
left2 lip				5
left2 lippage	5
left2 list	-10	22
left2 lit	-30			14		24
left2 live	26
left2 living room				7
left2 lock	9		6	-19
left2 log		-11		13
left2 lol		10
left2 long	-5	28
left2 long wall	19
left2 look	10
left2 lose	-14			13
left2 lot	21	-8
left2 low	-8	15
left2 lower	20
left2 luis	29	-7		-18
left2 lunch		18
left2 lying	-8	-15		19
left2 machine	25	-13
left2 make		9		-11
left2 mark	17
left2 mason	7
left2 master bath	24
left2 mat		10
left2 match		-17	16
left2 mate	-29	32		-7
left2 matter	6
left2 max				7
left2 maybe	-15	27		-14
left2 me	-7		19
left2 measure	35
left2 meet	6
left2 melt	5
left2 mess	-16			22
left2 might		4
left2 mill	-15			-13	24
left2 min	16
left2 mind			11
left2 mine	20			-5
left2 miss	-11	31
left2 miter	21			-9
left2 mitre	13
left2 mix	-43	-5	29		14
left2 moisture	14
left2 money	10
left2 more		7
left2 mortar	-22			20
left2 most	12
left2 mount	29			-11
left2 mrs	13
left2 much	20
left2 mud	-27	14	21
left2 mudroom		11
left2 mush	21
left2 must	18
left2 my	21
left2 nail	-13			24
left2 natural	-33	35		-4
left2 near	-25	-17	18	13
left2 need		10
left2 nest	14
left2 neutral	8
left2 never	6
left2 new				23
left2 next	11
left2 nick	6
left2 night	18
left2 nobody	10
left2 noise	20
left2 noisy	7
left2 none		16	-16
left2 noon		-15		-23		21
left2 north side		-6		14
left2 nos	29			-12
left2 nose	19
left2 not	33
left2 number	-14			14
left2 nursery	9
left2 oak		-23
left2 oil	14
left2 one's	34			-7
left2 open			5
left2 opened up	19	-10
left2 or	23
left2 oscar	-6	20		-22
left2 out of plumb	4
left2 outside	14
left2 over	5
left2 overhang	19
left2 owe	-19	30		-19	8
left2 own	17
left2 owner	-5		22
left2 pack				6
left2 paint		-13	8
left2 painted shut	14
left2 paper	21	-7
left2 park	16	-6
left2 party wall	20		-5	-15
left2 pass	5				6
left2 past				7
left2 pay	23				-6
left2 peel	26
left2 people		9
left2 phone	20
left2 photo	13
left2 pick	-27	12		-6	42
left2 picture	18
left2 piece	24
left2 pin				7
left2 pipe	7
left2 pit	10
left2 pl			12
left2 place	5
left2 plan	32	-19		-8
left2 plane	11
left2 plaster		-8		10
left2 plate			-8
left2 plate's	21		-6	-14
left2 please		21
left2 plenty	-22	-10	20			11
left2 plug	21
left2 porch	18			-10
left2 pour	6	-5
left2 powder room	-9	-8				23
left2 pressure	9
left2 primary bath	12
left2 prime	13
left2 prop	6	-12
left2 pump	5
left2 punch	21
left2 purge	17			-6
left2 put	-18			41
left2 quick				5
left2 quiet	-27	35
left2 quote	20
left2 r		-14	-8	13
left2 rack	9
left2 rain	21
left2 rate	28			-5
left2 rather	9
left2 rattle	-17	22
left2 ray	14
left2 ready	19			-9
left2 real	-16	14
left2 rebuild	-32			39
left2 receipt's	12
left2 reception		11		-9
left2 recess	6
left2 reckon		15	-7
left2 red	24
left2 redo		-8	-10	9
left2 refix	-20	-13	-10	27
left2 reglue		-9	13	-5
left2 remodel	19
left2 repair				5
left2 report	10
left2 require	-34	31	8	-23
left2 rest	33
left2 return	-10					9
left2 reveal	23
left2 rh				-15	18
left2 ridge	25			-22
left2 right	19
left2 rise	35			-5
left2 rm				23
left2 road	34	-9
left2 rocking	9
left2 rocks	24
left2 rod	-7	29	-11
left2 roll	-6		16
left2 roof	11
left2 room				17
left2 roots	20
left2 rotten	5
left2 rough	22			-5
left2 round		14
left2 row	26
left2 rubber	8
left2 rusted through	6
left2 salon	-13			23
left2 same	17			-10
left2 sand				-10
left2 save	27	-7
left2 saw	14
left2 scrape	14	-11	-21	8
left2 scratch	12
left2 scribe	5
left2 seam	9
left2 seat	17
left2 second	-9	5
left2 second floor				4
left2 section	5
left2 seize				7
left2 send						24
left2 settle	19
left2 shd	15
left2 she'll	-8	15
left2 sheath	5
left2 sheet	22
left2 shim	24			-8
left2 shingle	-12		18
left2 short		25
left2 shot	-15	15
left2 should		6
left2 show	19
left2 sideways	4
left2 sign	16
left2 silicone	-19				8
left2 since	-8			19
left2 site	-16	31		-5
left2 size	12
left2 skim	18	-17
left2 skirt			17	-17
left2 slab	18			-21
left2 slip	20		-20	-22
left2 slope	18
left2 slow					7
left2 small	-5	17		-16
left2 smell	14
left2 smooth		-6			13
left2 snake	19
left2 snap	-18			11
left2 snug	29			-8
left2 so		9
left2 soft close	8
left2 sold	9
left2 solid	4
left2 some	10
left2 somebody's	18
left2 somewhere	-13	18
left2 sorry	16
left2 sound	36
left2 space	17
left2 spare	-11		14
left2 sparky	23
left2 spec	17
left2 spin	-12				19
left2 spins			12	-14
left2 spitting	-8			14
left2 splash	16
left2 splice	20
left2 spongy	20
left2 spot	25
left2 square	25
left2 squeak	16
left2 ss	-18	24		-19
left2 st	30			-6
left2 stack	4	-9
left2 stain	6
left2 stair	26
left2 stairwell	19
left2 stand	17
left2 staple			11	-13
left2 static	8
left2 stay		-9	10
left2 step	21
left2 steps	23
left2 stick	17
left2 stock	-35	-4	35	-30
left2 store	29
left2 straight	-6	15
left2 straighten	22
left2 strap		14
left2 street		-30	-9		21
left2 stretch	18
left2 strike		17
left2 strip	-5			7
left2 strong	11
left2 study	9		-8	-12
left2 sun	14
left2 sunroom	26	-18
left2 super	15
left2 supplier	-4				9
left2 supply	-15			24
left2 surround	13
left2 swap				17
left2 swear	4
left2 sweat	-23	-16	17	-15	15
left2 sweep	25
left2 sweet	8
left2 swell	24			-19
left2 t	23
left2 tae	12
left2 tag	15
left2 take				-14		18
left2 tall		5
left2 tap	20	-4
left2 tea	9
left2 tear	21
left2 tenant	12
left2 test	26
left2 that'll		12	-10	-22
left2 the boys	6
left2 the lady		12
left2 the wrong	8
left2 the yard		-22	20	-18
left2 them	7
left2 then		10
left2 there's			43	-8
left2 thermometer	10
left2 they'll	25	-12
left2 they're	5
left2 they've	6			-7
left2 thick	7
left2 think	33	-19
left2 third	-24		40
left2 this				11
left2 though	15
left2 thread		-9		9
left2 throw		-19		10
left2 tight	18
left2 tighten	17
left2 tile guy			11
left2 tin	15
left2 tip	9
left2 toast	-27	37		-6
left2 together		-8		9
left2 too deep	5
left2 too high		11
left2 too long	10
left2 too short	24
left2 too small	9
left2 top edge				10
left2 top's	12
left2 torque	5
left2 total	-19	12	-15	18
left2 touch	14
left2 town	-40	43	-13	-31
left2 traffic	8
left2 trailer	26	-14
left2 trey	7
left2 trip	24	-16
left2 truck			7	-19	9
left2 try		4
left2 tube	-18			23
left2 twice			6
left2 twist	26	-21		-4
left2 type	29	-25
left2 underneath	16
left2 underside	12
left2 unit	-9			6		14
left2 until	15
left2 update	9
left2 upper				5
left2 upside down				-18	18
left2 upstairs				21
left2 us	17
left2 use	-13			14
left2 utility	22	-12
left2 utility room	12
left2 v need.		11
left2 v return.	-10					9
left2 v see.	12
left2 v use.	-13			14
left2 vacuum	26			-10
left2 van			23	-29
left2 vendor	17
left2 vent	16
left2 visit			19
left2 wall's	8
left2 walls	24
left2 walnut	16
left2 warp	11
left2 wash	20
left2 wasn't	22
left2 wasp nest	4
left2 waste	35	-18
left2 water	13
left2 water line	5
left2 wax	-4	13
left2 we'd	-28	31
left2 we'll	-21	35
left2 we're	-21	38
left2 we've	-7	-16	8	5
left2 weatherstrip		14
left2 weight	23			-7
left2 weld	9
left2 well	4
left2 were	9
left2 west side			-12	8
left2 west wall	-7	15
left2 wet	18
left2 what	22
left2 where	24
left2 which	21
left2 white	-53	46
left2 who	21
left2 whoever	18
left2 whole	28			-13
left2 wide	9
left2 wider	20			-9
left2 will	-5	16
left2 wind	11
left2 wipe				9
left2 wire		11
left2 without	-18		23
left2 wobble	22
left2 won't stay	19	-10
left2 work	19			-5
left2 would	-12	18
left2 wrong	32	-6
left2 ya	17
left2 yard		14		-16
left2 yes			10
left2 yet		6
left2 you	30
left2 you're	15
left2 zone			18	-20
left3 &		16
left3 '	17			-5
left3 (	9			-9
left3 *	32	-18	-16
left3 -	6
left3 /				4
left3 2				12
left3 4	-5			14
left3 ;	-21	13	7
left3 =	9
left3 @	14	-6			9
left3 [	9
left3 above	17
left3 across	-6			18
left3 add	38	-9		-22
left3 ain't			7
left3 air				4
left3 alarm	16
left3 all				7
left3 almost	13
left3 along	17	-5
left3 also				-6
left3 alvarez	-8	17
left3 am		8		-10
left3 an	5	7	-12
left3 anchor			8	-4
left3 another	10
left3 any	-7	17
left3 anybody	25
left3 anyhow	4
left3 anything	12		-16
left3 apron	11
left3 area		21		-23
left3 around	5	4		-14
left3 arrive	4
left3 attic	22
left3 b	-42	-9	15	31
left3 back bedroom	15
left3 back's	6
left3 bad					6
left3 balance	30			-17
left3 bar	-15		19
left3 bare				9
left3 bay	-22			6	20
left3 bays	-11	22	-6	-21
left3 bead		-11		16
left3 because	19
left3 bed				29
left3 bedroom		4
left3 bedroom 2	10
left3 bedrooms	9
left3 before	5
left3 belly	-10	-4		18
left3 below	11
left3 bench		-11		15
left3 bend		13		-15	6
left3 beto	18
left3 better	16	-29		10
left3 between	11
left3 birch		-22	15
left3 black		11	-8	-12
left3 bled	13
left3 board		11
left3 boards	-19			5
left3 bolt	23
left3 bone		22		-16
left3 boss	13
left3 both	10			-28
left3 bow	14
left3 br	26	-10		-16
left3 bracket	23	-13	5	-22
left3 brass		-5		12
left3 break	-9		22
left3 bring	6
left3 brother		7
left3 brown	14
left3 brush	-15	-9	20
left3 build	23
left3 burn	-11		14
left3 button	6
left3 cab	-12			14
left3 can't	25
left3 cap	9	-13
left3 card		-5		8
left3 carpenter	-5	11
left3 cat	10
left3 catch	19
left3 caulk	-27	15	19
left3 cause	13
left3 cellar	32			-23
left3 change	-7	8	-29	14
left3 channel	16
left3 charge	10
left3 chase	-7			15
left3 check			13	-17
left3 chip	-13	7
left3 chirping	-18			23
left3 chirps	-7			20
left3 church		-10	13	-24
left3 clear	16		10	-23
left3 client			7
left3 clip		-10	9
left3 closet	29
left3 code	27	-5	-17
left3 coffee	15
left3 complete				9
left3 connect	5	-17		12
left3 contact	27	-21		-4
left3 core	23			-10
left3 corner						6
left3 corridor		-13		15
left3 count	-6		18
left3 course	21			-15
left3 cover	8
left3 crack	-19	18
left3 crown						16
left3 cup	-15			-13		16
left3 cure				11
left3 customer	14
left3 cut out	-28	16		15
left3 damp	12
left3 day	31
left3 daylight	10	-4
left3 dead	16
left3 decide	5
left3 deck	12
left3 deliver	-19	-13	29	-29
left3 delivery	-28	-28	8	-33	33
left3 den	11
left3 dent	7
left3 dentist's	8
left3 depth	9
left3 dial	9
left3 didn't	10
left3 dining	14
left3 dining room	36	-10		-23
left3 dip				11
left3 doesn't	19	-15
left3 don't				10
left3 dont	8
left3 double	-31			18
left3 downstairs	38	-24		-19
left3 drags	10
left3 draw	-7	10			9
left3 drill				12
left3 drip	-28	4		22
left3 drive	-23	18		-11	15
left3 driver		15		-12
left3 driveway	12
left3 drop	4
left3 drunk	-13			22
left3 dump	7
left3 each		-16	-21	35
left3 early	-4		17
left3 eat	21			-8
left3 edge	14
left3 edges	18		-6
left3 eggshell	4
left3 electrician	33	-12	-27		18
left3 empty	-17	18
left3 ends	4
left3 entry	-7			17
left3 epoxy		-14		14
left3 even	16
left3 ever	10
left3 everything	28	-10
left3 everything's	24	-20
left3 except	33	-12
left3 extension	-11	-10		21
left3 exterior		5
left3 extra			14
left3 eye	-18			21
left3 face	17	-11
left3 fall	24
left3 falling	16
left3 falls	7
left3 family	10
left3 family room	17
left3 far	18
left3 fat	-9	18
left3 feel	-6
left3 feet	-14	22
left3 fell	29	-11		-20
left3 fence	-4	-4		15
left3 figure	17
left3 finally	27	-5
left3 find		4
left3 fine	-16	4		12
left3 finish	-11			19
left3 fire	19
left3 first			9
left3 fix		-19		4
left3 flash	12
left3 flip	-23	24
left3 float	-9			15
left3 float's	7
left3 floor	27	-4
left3 foam	-7			9
left3 foil		9
left3 forget		10
left3 frame	7
left3 fre	5
left3 free		16
left3 fresh			13	-8
left3 from		-14
left3 front		-22		11
left3 front hall		18	-11	-14
left3 front room	26			-12
left3 frost	18
left3 full		19
left3 gas		14		-6
left3 get	7
left3 give	7
left3 glue	-12			8
left3 god				5
left3 gonna		18
left3 gray		6
left3 green	-5
left3 grind		17		-7
left3 grout	-15
left3 guess		7
left3 guest room	6
left3 guy	14
left3 gym		-24	-14	16
left3 hair	8
left3 half	-7	10	-12	-24		17
left3 hall	-12	19
left3 hand	-8	9
left3 happy	22	-14
left3 has	43
left3 hasn't	9
left3 haven't	10
left3 haze	-8	17
left3 he'll	-24				18
left3 he's				-9
left3 head		19
left3 hearth	17
left3 heat	17
left3 heavy		16			-5
left3 height	22
left3 hendersons	18
left3 her	22			-13
left3 here	17
left3 here's	-13				20
left3 him		-11		9
left3 hinge	17
left3 his	19
left3 hole	-8		5
left3 hole's	-7	-11		18
left3 holes	-5	14		-10
left3 hollow	-22			27
left3 homeowner	13
left3 hook	-9
left3 house	4
left3 how	-6	17
left3 hum	23			-8
left3 i'd	10
left3 i'll	12
left3 i'm	-13	11	16
left3 i've			16
left3 if	23	-8
left3 inch	-15	18
left3 inside	-30	20		14
left3 inspector	20
left3 instead	6
left3 into	-27	13	6
left3 invoice	-14			17
left3 island	-8		-6	15
left3 isn't	12
left3 it's	21
left3 itself	31	-11
left3 jam		8
left3 jefe	8
left3 jet	12
left3 job		6
left3 joint			9
left3 keep	20			-9
left3 kids	7
left3 kill	18			-6
left3 kind	17	-10
left3 kit			14
left3 kitchen		-4
left3 knock	16
left3 know	21
left3 ladder	15	-22			11
left3 lady	16			-15
left3 lag	-16			17
left3 land	35		-22
left3 lap	8
left3 latch	7
left3 lay	23
left3 lead				6
left3 leaf				13
left3 lean		-12	15	-22
left3 leaning	9
left3 leans	22			-15
left3 led	21	-23		-10
left3 let	11
left3 let go	-25			27
left3 level	6		-13
left3 lh		10
left3 lid	46	-31
left3 like	13
left3 lime			13
left3 lip	-10			12
left3 list		14	-8
left3 live	27			-11
left3 living room				5
left3 load	6	-19	11
left3 lock				15
left3 loft	20
left3 long				-14
left3 long wall	13
left3 longer	38	-27
left3 loop	17
left3 loose	17
left3 lot	42			-28
left3 lounge	6	-8	-19	11
left3 low	-8	20
left3 lower	11
left3 luis	9
left3 lunch	12
left3 m	18
left3 main	33	-12		-9
left3 man	-17			15
left3 mark				12
left3 master			-17	18
left3 master bath	15
left3 maybe	-15	16	7
left3 meanwhile				9
left3 meet	-4	-17	-13	20
left3 metal	20			-7
left3 mid	17	-4		-14
left3 middle				7
left3 mill	13
left3 mind	5
left3 mine	9
left3 miss	-5
left3 mix	22			-25
left3 moisture	22	-6
left3 mold	25			-13
left3 more		24
left3 morning	14
left3 mortar	8
left3 mouse			15
left3 move	8
left3 mr	14
left3 mrs	-18			17
left3 much	-14			20
left3 mud		-16		13
left3 mudroom	30		-9
left3 mush	-15			19
left3 must		5
left3 myself	4
left3 n	7	-11	-5	10
left3 nail		-9		9
left3 natural		-9	14	-21
left3 ne	21
left3 near		9		-12
left3 nearly				14
left3 neighbor	13
left3 new				21
left3 news	-9			16
left3 night	11
left3 nobody	29
left3 none		8
left3 noon	-27	26
left3 north	9
left3 north side	-9			19
left3 not touching	18
left3 note	5
left3 nowhere	-7	-8	17	-10
left3 number	31
left3 nursery	-15	-14		28
left3 oak	-16	-17	32
left3 ofc	7	-29	-19	8
left3 office	15	-26		20
left3 oil	-14	24
left3 okay	30
left3 old	7
left3 once	19
left3 ones		4
left3 open	-29	15
left3 opening's			13
left3 or	13
left3 orange	16
left3 order		9
left3 ought	13
left3 our	5
left3 out of level	11
left3 out of square	9
left3 outside		8
left3 over	5
left3 overhang	-13	21
left3 owe		8
left3 own	20
left3 pack	-13	8		12
left3 painter	9
left3 pantry	32
left3 paper	10
left3 parlor	24		-8	-8
left3 part	18			-13
left3 past	15	17	-22	-7
left3 patch	-22		5
left3 patio	-9		26	-20
left3 peel	12
left3 per	26	-16	-10	-5
left3 phone	15
left3 pick	-5	32
left3 piece		-11	16	-12
left3 pieces		-13	-6	10
left3 pine		-11	16	-10
left3 place	6
left3 plane	11
left3 plaster		10
left3 plate	-5			9
left3 plug				20
left3 plumber's	-16	21
left3 point	-16		5	12
left3 pool		11
left3 porch	8		-12
left3 pour	12
left3 powder	10	-19	-10	7
left3 powder room	13		-18
left3 pressure	5
left3 prime	-24	30
left3 proper	-22	20
left3 proud	25	-9
left3 proud of	6
left3 pull	27
left3 pump		-13		24
left3 putty	29
left3 quiet	12
left3 quit	15
left3 r		11
left3 rain		-16				6
left3 raise	-15	21
left3 rate	-7	-16	4	10
left3 ray	16
left3 reach	-22	26
left3 ready	18
left3 real		18		-22
left3 recut	5
left3 red		15	-29	8
left3 redo			9	-7
left3 rehang	-9			17
left3 rental	-4			13
left3 repair	-6		-9	16
left3 reset	12	-9
left3 return			14
left3 reveal	-11	19
left3 rh	18
left3 right			7
left3 ring	-25	14		18
left3 rip			5
left3 rm		-9		26
left3 road	9
left3 rocks	-15	25
left3 rod		-14	20
left3 roll		-16		6
left3 roof				16
left3 rotten	19	-5
left3 round	-11					19
left3 router	-17	21
left3 row	30	-9	-13	-16
left3 rubber	-12	-21	13	11
left3 s	28
left3 sag	-7
left3 salon	18		-7
left3 same	34	-4
left3 sand	18			-6
left3 sandwich	24
left3 saw	-18		22
left3 scrap	6	-29		19
left3 scrape	27
left3 screen	10	-11
left3 scribe	17
left3 second	-26	24
left3 second coat	17
left3 self	27	-17	-17	-16	-5
left3 she	17			-8
left3 shed	-8			16
left3 shingle	-19		5	19
left3 shoot		8
left3 shop			-5		9
left3 shot	-4	22	-19
left3 should	-5
left3 show	34	-8
left3 shut			18	-25
left3 shy	-9			14
left3 side's	-28	-7	13	19
left3 sign	16			-5
left3 since	6
left3 sister		7
left3 sit	5
left3 size	-8		16
left3 skim	28		-14
left3 skin	12
left3 slab	10
left3 slide		4		-9
left3 slow	29			-22
left3 small	37			-23
left3 snake	23	-4
left3 snap	8
left3 snug				14
left3 soak	7
left3 soft	28
left3 soft close	23			-15
left3 solder					17
left3 solid	-9			15
left3 some		21	-7	-9
left3 somebody		13
left3 somebody's	21
left3 something	16
left3 somewhere	20
left3 sort	-29			16		20
left3 south wall	-21			24
left3 spare			16	-13
left3 spec	15
left3 spin		15
left3 splice				9
left3 split	-13	16
left3 spot		-10			9
left3 spray				10
left3 square	-34	4		7
left3 stack	-23	-12	19
left3 stain	-5			15
left3 stainless	-33			20	10
left3 stairs	-29			32
left3 stairwell	-4			18
left3 staple	15	-12		-10
left3 stay	21
left3 steam	-11			19
left3 steps	19	-12		-25
left3 stick	8
left3 stock	-34	-27	41	-37
left3 store		10
left3 straighten	-12	-14	-12	-6	24
left3 strap	18
left3 strip		7
left3 stuck open	22	-7		-5
left3 study	30		-7	-16
left3 stuff	-23	24
left3 supplier					11
left3 supply	-38	9	-13	-8	23
left3 swap	-23		17		15
left3 sweat	-12			17
left3 swing	-9	6
left3 tag				6
left3 take	-5					22
left3 talk	30		-19	-20
left3 tall	7
left3 tank	27	-12
left3 tap				5
left3 tape	38			-12
left3 tear	18			-12
left3 temp	8
left3 template	20			-14
left3 temporary	-17			20
left3 tenant	4
left3 test	-11	21
left3 that'll	11
left3 that's	6
left3 the lady		-17	16
left3 the lady's	11
left3 the wrong	8
left3 the yard	11
left3 there	4
left3 they		-28
left3 they're	19
left3 they've	21			-8
left3 thick	-7	-9		25
left3 third	-19			11
left3 this						4
left3 those	30	-26
left3 though		9		-23
left3 through	15
left3 throw		5
left3 tight		-7
left3 tighten		4
left3 til	-30	20	24	-35
left3 time	-21		16
left3 together	13
left3 too		21
left3 top	5
left3 total	-14		25	-10
left3 touch				4
left3 touch up	10
left3 trim		16
left3 trip	-8	16
left3 tuck	5
left3 turn	14
left3 twice	-24	12		13
left3 two				4
left3 under		-19
left3 unit	22
left3 unless	15
left3 until	7		6
left3 upstairs	27	-19
left3 use			17
left3 utility	25			-13
left3 van	-35	23		-16	19
left3 vent	11
left3 vestibule	34			-23
left3 visit	-20	11		17
left3 wait			30	-22
left3 walk	-29	7			18
left3 wall's	20
left3 waste	-17	23		-5
left3 wax	-16		23
left3 way	10
left3 we'll		7
left3 we're			11
left3 weather	-6	18		-9
left3 wedg	18			-6
left3 weep		13
left3 weight	34			-12
left3 well			-7
left3 were	5
left3 what's	-16		21
left3 when	20
left3 where	16
left3 while	17
left3 white	-13	28		-19		10
left3 whole	5		-4	6
left3 wide	11
left3 within				5
left3 without	-12	16			5
left3 wobble	6	-12
left3 wont	13
left3 work	26
left3 worn				-9	14
left3 would	21
left3 wrap	-6
left3 write		14	-9	-6
left3 wrong	-5	15
left3 x	-4
left3 yeah	11
left3 yellow		5
left3 yet	-25	32
left3 your	11
left3 ~	14
length after bought far	6	5	-10	-6
length after have far	-43	20	11	-13
length after have here	41		-17
length after have sentence	19		-22
length after need far	-32		28
length after need here	9			-14
length after need sentence		21	-16	-20
length after none far		26		-26
length after none sentence		8
length after used far	-12
length after used here	11	-18
length after used sentence	-14		35	-5
length before it ate	-6	-16		27
length before it back	-19	12		10
length before it bought	-22	-12		-19	31
length before it came	5	-27		8
length before it have	-18		42	-11
length before it lacks	13			-12
length before it need		24
length before it used				33
length behind it back		-8			7
length behind it came		22		-33
length behind it have	-21		10
length behind it lacks	10
length behind it need	-5	6
length behind it used	-29			16
length beside are				6
length beside be	16
length beside bring	11	-5
length beside buy	-29			-17	28
length beside buy b other	12	-6
length beside call	-8	11	-9	-34	16
length beside come	-16	20	-11
length beside cut	44	-10		-18
length beside dig	19
length beside do	-13	11	-5
length beside figure	-17	23		-7
length beside get	-28		24	-23	4
length beside go	-24			15
length beside hang		-18		16
length beside have	-29		31
length beside have b nobody	-25		30
length beside have b person	-18	-11	8	7
length beside hit	11
length beside is	6
length beside leave	-5	-25	22	-28
length beside level	26			-11
length beside like		8		-17
length beside make	8	-26	-5	5
length beside measure p other		-28		13
length beside miss		10		-16
length beside move p other			12	-29
length beside move pp other	-16	-26	27	-25
length beside need		37
length beside need b nobody	-8	27
length beside need b other		9
length beside need b person		27
length beside need s other	-13	21		-8
length beside nothing				9
length beside order	-30				18
length beside other b nobody	14	-6
length beside other b other		30	-14	-23
length beside other b person	-54	50	7
length beside other i other	4	6		-17
length beside other p nobody	11	-17				-11
length beside other p other	-23				9
length beside other p person		-11	22	-5
length beside other pp other			8
length beside other s other	21			-11
length beside pick	-21	31
length beside pull	-24			26
length beside put	-42			31
length beside run		-21		23
length beside say	-21	17	-12	9
length beside say b other	-17	15	-13
length beside say i person	-11	18		-14
length beside set		-7		10
length beside snake	16
length beside stop	-20	27		-8
length beside take		-9		16
length beside undefined has other	40	-16	-26	-23
length beside use	-32	-11	6	26
length beside use pp nobody	-20		17
length beside use pp other	-40	-9	9	22
length beside want		17		-28
length beside work b nobody		4	9	-33
length beside work b other		18
length beside work b person	-10	10	-4
length beside work bp other		-5		9
length beside work bpp other				14
length beside work bpp person	-15	-22	8	13
length beside work i other	36	-7
length beside work p nobody	5	-21	-14
length beside work p other	-8			14
length beside work p person		-18	-14	14
length beside work pp nobody		-22		14
length beside work pp person		-25		21
length beside work s other	15
length beside wrap	-18		29	-32
length cue ate	-4		-14	30
length cue back	12	-10
length cue bought	-22	-12		-19	31
length cue have		-11	50	-34
length cue lacks	5			-11
length cue need		47
length cue used	-12			29
length flawed	21
length have present behind		-14	8
length kept	-9		41	-43
length left +	17	-13
length left ,	-22	11		20
length left -	7	-23	-8	5
length left .		-41	37	-24
length left :	-23		-29	30
length left @	16			-7
length left Q	34	-12	-13
length left and	-22	45
length left at	61			-23
length left be	35
length left by	15	-4
length left every	49			-38
length left figure	-17	23		-7
length left for	-5	16		-4
length left get	-28		11	-27	16
length left have	-27		35
length left in	49
length left is				10
length left it	-26	8	-23	19
length left it's		13
length left like				-14
length left maybe	-21	9	15	-17
length left me	-27	20	6
length left need	-22	46
length left of	35	-33
length left order	-30				18
length left out	27			-5
length left over	30
length left pull	-10	-13		17
length left put	-15	-16	-9	27
length left run	-16			28
length left say	-23	18	-16	11
length left short				-10	13
length left take	-23	-13		31
length left that's		15	-8	-14
length left the	31	-6		-25
length left to		-6	-11	11
length left up		7
length left use				21
length left want		17		-19
length left with	-26	15	8
length measure past behind	24
length more	-14	20		-6
length move past before	5	-12	7	-26
length move past behind	22		-13
length name flawed	-17	19
length named before area		-40	-29	7	21
length named before finish			8	-22
length named before fixture	21			-26
length named before surface	19	-6		-16
length named before tool	14	-5
length named here finish		9
length named here material	-72	24		19
length named here part	-34	41
length named here surface	-12	17	9	-30
length named here word	-16	14	-9	20
length need modal behind		14
length need owed behind		19
length not ahead	26			-13
length null copula behind			6
length other copula before	-21		4	18
length other copula behind	15
length other imperative behind	-13	36		-5
length other modal behind		15		-5
length other past behind	-6	-25	18		6
length other present behind	-16	22
length pointing		-6	28
length right 
	-18	-6	14
length right #	-33	43
length right +	-34	37
length right .	-6			14
length right Q	30	-23
length right across	34
length right and		22
length right around	-7			19
length right at	21		-9
length right by		-10	15	-11
length right down	6	-16		5
length right for	-25	9		20
length right from	29	-27
length right go	-31	-35	-23	39
length right i			-16	8
length right in	-21	-4	22
length right is	-6
length right leave	-6		32	-7
length right of	-39	-19	29	24
length right off	-8		-7	18
length right on	-7		4
length right short	7
length right so	35			-20
length right tell	-34	8		30
length right up	-12		-9	27
length right with		-20	-6	12	5
length right you				8
length say imperative behind				-16	17
length say modal behind	-14	4	-9	15
length say present behind		16		-16
length says copula before	-35	10	4	17
length says imperative behind		24
length says modal behind	-12	22
length says modal behind not	38	-20	-4	-16
length says owed behind	-12	41
length says past before	-13			14
length says past behind				15
length says present behind not	-19	28	-15	-9
length sized	-84	13		33
length sold so true	-24			9
length then buy b	-30	16	16
length then measure bpp	27			-15
length then move p	-24	-26	-31	36
length then move pp		-12	25
length then need b	-27	15	6
length then other b			-5
length then other p		-14		11
length then other s				6
length then say b	41	-21		-20
length then say s		11
length then undefined has	-33	9		25
length then use pp		-12
length then work b		15
length then work bp		-17	16	-16
length then work bpp	33	-6		-9
length then work i	-4	-14	18	-14
length then work pp			-6
length then work s	25	-14
length use past before	-31	-7		38
length use past behind	-18			34
length verb be before	-21		4	18
length verb be behind	17
length verb bring behind				-4
length verb cut behind	16
length verb do behind	4	5		-17
length verb figure behind	-13	18
length verb get behind	-37	7	18	-12	8
length verb go behind			-8	10
length verb grab behind	19	-13		-6
length verb hang behind	8	-7	-7
length verb have behind			6
length verb hit behind	11
length verb leave before		-14	9	-25
length verb leave behind	27		-9
length verb need behind		25
length verb order behind	-22	33
length verb pick behind	-14	25		-5
length verb pull behind	-8	-9		16
length verb put behind	-12		-10	16
length verb run behind		-20		24
length verb say behind	-20	16	-8	8
length verb take behind	8	-15	-7	6
length verb use before	-31	-7		38
length verb use behind	-24			42
length verb want behind				-9
length whole clause	-20	16		21
length work imperative behind	12
length work owed behind	-6	15		-14
length work past before	-34	15		26
length work past behind				29
length work present behind		-5		4
list have			27	-18
list need	-21	64	-13	-17
list used	-14	-32	-18	47
many	37
marked	-24	29
meant back 5	-4		7
meant back 7	28			-32
meant back 8	17
meant before more	-5		29	-20
meant before new	-13	6
meant before no	-8	19
meant ran out	-33	61
more		31		-7
named before finish	-24		11
named before tool		14		-7
named here defect	44
named here work	21
nameless	15
next copula other comma	4
next copula same stop	19
next cue ate other		6
next cue bought other	-4
next cue bought same						6
next cue lacks other				13
next imperative same stop	25
next modal same stop	10
next none other comma	-22	30
next none same run-on	12
next none same stop	6
next owed same stop	-5	17
next past same and				9
next past same stop	23
next present same stop	32
next use buy imperative same		18
next use buy modal other	25	-4
next use buy modal same	-13		6
next use buy owed same	-34	26	17
next use buy past other	37
next use buy past same					50
next use buy present same	14			-11
next use have imperative same	46
next use measure imperative other	42			-13
next use measure modal other			5
next use measure modal same	20
next use measure owed other	-9	23		-13
next use measure past other	5
next use measure past same	18
next use move modal other	25
next use move owed other	13
next use move present other		17
next use need modal other			-29	27
next use need past other	-8		23
next use need past same			12
next use need present other	12
next use null imperative same			14
next use null modal other	16
next use null owed other	-11			10
next use other imperative other			20
next use return imperative other	-19	6	13	-17
next use return imperative same	-9	-5	19
next use return owed other	35	-16
next use return past other	15
next use return past same	-46	-23		-5		50
next use return present same	7
next use say imperative other	7			-18
next use say modal other			16
next use say owed other	13
next use say past same	7
next use say present other				-5
next use see copula same	7
next use see owed other			4	-15
next use see owed same	20			-27
next use see past other	13
next use see present same	14
next use use imperative other	7	10		-20
next use use imperative same	22
next use use modal other			5
next use use modal same			25	-31
next use use present other	4
next use use present same				26
next verb add other	9
next verb add same		4
next verb adjust other	19
next verb allow same	18
next verb anchor same		5
next verb auger same	-8
next verb back other	7
next verb back same	13
next verb backfill same		17
next verb bag same	10
next verb balance same			18	-18
next verb band same	-20			25
next verb believe same	-9	8	9	-6
next verb bend other			16
next verb bend same	-5
next verb bet same	18
next verb bin same	19	-28	-13
next verb bind other	20
next verb block same				12
next verb blow other	15
next verb blow same	25
next verb board same	18
next verb bolt same	-43			47
next verb book other	-31			27
next verb borrow same	-14	9	8
next verb bow other	24			-7
next verb bow same	7			-7
next verb box same				-4
next verb break same	44
next verb breathe same	-10	-14	-7	21
next verb brush same	-9		8
next verb bubble same	9
next verb build other	16
next verb bump same	7
next verb burn same	13
next verb bury same		21	-7
next verb bust same	6
next verb butter same	25		-21
next verb buy other	14
next verb buy same				-14	31
next verb buzz same	19
next verb call other				-17
next verb can't same	11
next verb cap other	33	-12		-22
next verb cap same	37
next verb carry same				15
next verb catch other		5
next verb catch same	5
next verb change other	28	-7
next verb charge same	-9	-21		-5	26	5
next verb chase same	13
next verb check other			6
next verb chip other	-13	-22		27
next verb chip same		-6	16
next verb chisel same	6
next verb choose same		10
next verb chuck same	19	-6
next verb clamp same	35
next verb clean other	19
next verb clean same	8
next verb clip other	21
next verb clip same	-8			23
next verb close same		7
next verb come other		8		-13
next verb complete other		15	-18	-9
next verb consum other		-11	17	-23
next verb cope same				6
next verb core same				10
next verb correct other	14
next verb could same	5
next verb count same			14	-15
next verb cover other		8	-12
next verb crack same	4
next verb crosse other	23	-5		-5
next verb crown same	-16	-11	23	-21
next verb cup same	12			-15
next verb cut out same	33			-14
next verb cut same	5
next verb decide other		14		-6
next verb decide same	21	-18
next verb degrease same	19
next verb dial same	-14		-17	22
next verb didn't same		-20		-4	20
next verb die same	16
next verb dig other	20
next verb dig same	9
next verb ding same	20	-9		-7
next verb do other	-16		-4	20
next verb doesn't same	16
next verb don't other	23
next verb drag other	25			-17
next verb drain same				17
next verb draw same	26
next verb drill other		-10		16
next verb drill same				5
next verb drip other	-14			16
next verb drip same		6
next verb drive other	20			-4
next verb drive same				12
next verb drop other	8			-10
next verb drop same	26
next verb dry other			-17
next verb duct same	18
next verb dump other	-11	15
next verb dump same	-8		17
next verb either same	23			-17
next verb email same	11
next verb empty same	-29		-8		31
next verb end same	35			-10
next verb exchange other	5
next verb exchange same	14
next verb extend same	20	-7
next verb fail other	11
next verb fail same				8
next verb falta other	-20			25
next verb fasten same	-28			30
next verb feather same	21
next verb feed other	-9			15
next verb feed same	28			-15
next verb feel same				7
next verb figure same	18
next verb file same	29
next verb fill other		-18		17
next verb find other	11
next verb find same	28
next verb fire same		-10		11
next verb fish same	14
next verb fit other	6
next verb fit same	-14			8
next verb fix other	24			-10
next verb flash same	-6			27
next verb flip same	29
next verb float same	4
next verb flush other				4
next verb foam same	-12			21
next verb forget same	-21
next verb frame other	12
next verb frame same	9	-22	12	-9
next verb fre same	17
next verb freeze same	9
next verb get other				-7
next verb give other	-9			11
next verb give same						27
next verb glaze same	-25	32
next verb glue other	20
next verb glue same	6
next verb grab other	17
next verb grab same		10
next verb grind other	8
next verb grout same	-11			5
next verb guess same	36
next verb hack same	15
next verb hammer same	5
next verb has other	20
next verb has same	7
next verb haul same	7
next verb havent same	25
next verb head same		-10
next verb heard same	22
next verb help same		14		-5
next verb hide other	9
next verb hide same	22
next verb hit other	14
next verb hit same	14
next verb hold other	23	-25
next verb hold same	10
next verb holler same	16
next verb hum other		-19	14
next verb hum same	8			-7
next verb i'd same	24	-10
next verb i'll same	13
next verb i've same	14
next verb install same					5
next verb insulate other	11
next verb iron same	27		-22	-14
next verb it'll same	4
next verb jam same	11
next verb jet same	20			-6
next verb keep other		11	-16
next verb key same	24			-6
next verb kid same	16
next verb kill same	10
next verb kink other	26	-7	-4	-12
next verb kink same		10	-17
next verb knock same	8
next verb know other		9		-18
next verb lag same	-25			18
next verb land same	13
next verb laugh same	9
next verb lay other		-24	-9	19
next verb lean same	13
next verb leave other	14
next verb let other		17	-7	-21
next verb level same	4
next verb lift same	12
next verb like other		12		-4
next verb line same	17			-8
next verb lip same	22			-9
next verb lit same				7
next verb load same	13
next verb lock other			8
next verb lock same	12
next verb look other	19
next verb love same	36
next verb lower same	30	-19
next verb make same	30
next verb mark same	9			-9
next verb match same		10
next verb meet same	-22	-12	27
next verb meg same	16
next verb mention same	13	-7		-12
next verb meter same	4
next verb miss same	17
next verb mix same	9
next verb mount same	-30	15		23
next verb mud same	28			-13
next verb must other	-11	8			12
next verb notice same	12
next verb oil same	7			-7
next verb open other	19
next verb owe other	-16	28
next verb owe same	26	-7
next verb own same				8
next verb paint same	6			-9
next verb pass other	23
next verb patch other				5
next verb patch same	8
next verb pay other	-9	-16	31	-23
next verb peel same	20
next verb phone same	4	5		-9
next verb pick other	-13	5	13
next verb pin same	8		-12
next verb pitch same		-5		5
next verb place same	6
next verb plan same					14
next verb plane other	12
next verb plate same	-22	-11	-23	37
next verb plug same				15
next verb plumb same	-5			13
next verb point same		-11		8
next verb polish same				12
next verb pop other	10
next verb pop same		19
next verb presse same				9
next verb prime other	-12			21
next verb program same		13
next verb promise same	8
next verb prop same				8
next verb pull other	10
next verb pump same	20
next verb punch same	20	-22	-8	4
next verb purge other	11
next verb purge same	-25	-4		39
next verb push same	7
next verb put other	19
next verb putty same	16
next verb quote other	8
next verb quote same	8
next verb raise other	13
next verb rake other	14
next verb rake same	-7	-5	25
next verb rang same	5
next verb rattle same	17
next verb reach other	24			-15
next verb reach same	20		-8
next verb read other	31	-21		-17
next verb rebuild same	14			-7
next verb recaulk same	21
next verb receive other	-5	16
next verb recheck other	-10	-10		16
next verb recoat same	21
next verb reconnect same	21			-12
next verb recut same	25	-5
next verb refasten same	5
next verb refit same	5
next verb refix same	20
next verb refuse same	-30	-5				40
next verb reglaze same	13
next verb reglue other	26	-12		-4
next verb rehang other	19
next verb relay same	16
next verb remake same	19
next verb rent same	-11	18		-11
next verb reorder other	14
next verb reorder same	-35	37
next verb repair same	-17	4		16
next verb replace other				6
next verb replace same	-5			24
next verb require other	-37	-27	28	19	-22
next verb require same	-14		19	-5
next verb reroute other	11
next verb reroute same	22
next verb reschedule same	25
next verb reseal same	9
next verb reseat same	24		-6
next verb retest same	-9	-17	-5	-4	22
next verb return other				-13
next verb return same	-33	-11				43
next verb ring same		10
next verb rinse same	-5			12
next verb rob same	28
next verb rock same	-10				19
next verb rot same	-5		17
next verb rough same	9
next verb round same	26
next verb rout same	25	-7		-8
next verb rub same	8
next verb sag other	-7			15
next verb sag same	32
next verb sand same	14
next verb save same	15
next verb saw same	-18	21
next verb say other				-7
next verb scrape other		5
next verb scrape same	5
next verb scratch same	4
next verb screen same	7
next verb screw other	8
next verb screw same				15
next verb scribe other	-10			18
next verb see other	23
next verb seize other		13
next verb send other		-26
next verb send same						13
next verb set same				11
next verb settle same	25	-22
next verb shave same	8
next verb shift other	5
next verb shift same	5
next verb shim other	7
next verb ship other	7	15	-27	-15
next verb short same	-27	7	-22		21
next verb shorten same	26
next verb show other	23			-5
next verb show same	17
next verb side same	14
next verb sign other	-23					24
next verb sign same	30
next verb sister same	38
next verb sit other	-16			18
next verb size same	-10	18	-16
next verb skim same	12			-4
next verb skin same	21			-15
next verb skip same	-13	20
next verb slap same	-4	5
next verb sleep same		-10
next verb sleeve same	9
next verb slid same	5
next verb slide same	21
next verb snake same	24	-12
next verb snap same				6
next verb snug same	12
next verb soak same	-10	15
next verb soap same				6
next verb solder same	7
next verb solve other	-6		17
next verb sort same			14
next verb sound same				8
next verb spend same	10
next verb spin same	22			-8
next verb split same	29
next verb spot same	21
next verb spray other	32	-15		-24
next verb spray same			4
next verb squeak other	-14			14
next verb stack same			7
next verb stain same	36			-12
next verb stand other	8	-13	17	-32
next verb staple same	23
next verb start other	-5		25
next verb start same	12
next verb stay same			19	-24
next verb steam same	22			-5
next verb stop other	27			-5
next verb straighten other	22
next verb strap other	4
next verb strap same	-7		11
next verb strip other		-5		19
next verb strip same	-13			4
next verb strung same	25	-19
next verb suppose same	9
next verb sweep same	15
next verb swell same	7
next verb switch same	20
next verb take other	-9		11	-12
next verb talk other	18
next verb tap same	23
next verb tear other	28			-21
next verb tear same	8
next verb temper same		10
next verb test other		15		-18
next verb test same				15
next verb that'll same		-9			12
next verb thin same		19
next verb think other	10
next verb thread same	-16	21		-9
next verb throw same					7
next verb tie same	-6	10
next verb tighten other	17
next verb tile same	17
next verb top same	27			-24
next verb torque same				12
next verb touch other		10
next verb trace other	4
next verb trace same	6
next verb treat same		-5		15
next verb trim other	17
next verb try same	24
next verb tuck same				11
next verb turn other	10
next verb turn same	8
next verb tweak same	20
next verb undercut same	16
next verb unload same	7
next verb unopen same	-31	-32	30	-29		15
next verb vack same	9
next verb vacuum same	16
next verb veed same	7
next verb vent same	19
next verb wait other	-7	4	-8	7
next verb wait same	-8			7
next verb walk same	-27		7
next verb want other				27
next verb wash same	5
next verb watch same	9
next verb we'd same	15
next verb wedg same				9
next verb weep other	5	-16		6
next verb weigh same				12
next verb weld same	24	-11
next verb whack same	21
next verb will same	5
next verb wire same				16
next verb wobble other	20			-6
next verb wobble same	-24			22
next verb won't same	-5		16	-7
next verb work same	18
next verb would same	25
next verb wouldn't same	25
next verb wrap same				8
next verb wrote same		7
next verb yank same	-8			13
next verb zip same	-7			12
one after bought far	37			-22
one after bought sentence		8		-23
one after have far	-7	33
one after have here		-18	6
one after have sentence		8
one after need here		19
one after none far	-17
one after none here	7
one after returned far	-34	24	11	-11
one after returned sentence	5
one after used here				9
one before it ate				13
one before it back	-10			10
one before it bought	-18			-19	10	25
one before it came		-8			6
one before it lacks		13
one before it need		24
one behind it ate	-4				-10	13
one behind it back	-5		4
one behind it bought	-22	-27	-9	-20	42
one behind it came		6		-28
one behind it have	-11		7
one behind it need		13
one beside add	-9	8		9
one beside are	9			-11
one beside ask		5
one beside bend	-7			9
one beside box	5	7		-23
one beside break	-12	24		-7
one beside bring		21
one beside build	26			-11
one beside buy						8
one beside buy b nobody	-35	43
one beside buy b other	-5	29
one beside buy b person					9
one beside buy i person	-22	33
one beside buy pp nobody		-18	-5	-5	15
one beside buy pp other	-40	-23	-17	-18	6	23
one beside buy pp person	-16	-25	19		20
one beside call	-9	19
one beside can	23
one beside cap	-5	-11		14
one beside chew	7
one beside chip	-9	16
one beside clean	6
one beside clear	28
one beside come						9
one beside could	5
one beside cover	30
one beside crack		12		-8
one beside dig	27			-10
one beside drill		-13		9
one beside drip	-11			31
one beside drop				8
one beside dry	7
one beside eat	-5	-7		14
one beside fill		6		-13
one beside find	21
one beside finish	21
one beside fit		6		-17
one beside flush	5
one beside get	-15
one beside give	15
one beside glue				11
one beside gonna		4
one beside grab	-10	22
one beside grind				17
one beside have b person	-24	31		-18
one beside have pp nobody	8
one beside have pp other	16
one beside have pp person	-19	-7		35
one beside help	18
one beside hold	19
one beside i'll	5
one beside i've	-6	-19	21
one beside keep	-10	-9	26
one beside lay		-11
one beside lean	22
one beside let				13
one beside level	23	-4
one beside lift	-16	22
one beside like	13
one beside look	-7	17
one beside make	-5			14
one beside measure		5
one beside measure b other	12
one beside measure b person	-4	9
one beside measure bp other	-11	24		-18
one beside measure bpp other	8
one beside measure bpp person				7
one beside measure i other	33
one beside measure i person	26	-7
one beside measure p other						20
one beside measure pp other	28	-15
one beside measure pp person	6
one beside miss	-24	26
one beside move	8
one beside move b person	16
one beside move p other	-4	-5		20
one beside move p person	28	-5	-6	-18
one beside move pp nobody	-10		18	-4
one beside move pp other	5
one beside move s other	12
one beside nail	7	-6
one beside need		13
one beside need b nobody	-25	35
one beside need b other	5
one beside need b person	-15	43
one beside need s person						8
one beside nick	4
one beside nothing	-15
one beside open	7
one beside order	-19	24			9
one beside other b nobody	-19	23	6
one beside other b other		28
one beside other b person		22
one beside other i other	-5	24
one beside other i person	-15	26			8
one beside other p nobody		-30	14	-37
one beside other p other		-8
one beside other p person			21
one beside other pp nobody		-28		-11	30
one beside other pp other	-12			14
one beside other s other	4
one beside owe	-11	16			9
one beside paint	13
one beside pick	-20	7			24
one beside pin	23			-16
one beside place	-12	-5		19
one beside plane	19
one beside plumb	21			-5
one beside pop	15
one beside pour	19			-10
one beside prime			4	-7
one beside prop	-23		18	9
one beside pull	23
one beside put	-7			36
one beside rate	-11	-16		18
one beside read	28
one beside replace	-6	-20		15
one beside return		14	-8	-16
one beside roll	25
one beside run				9
one beside say	35	-16
one beside say b other		11
one beside say i person	-9	26		-11
one beside say pp other	14
one beside say pp person	23
one beside say s other		5
one beside say s person	-5				23
one beside scrape	10
one beside screw				17
one beside scribe	17
one beside see b other	24	-7
one beside see b person		6
one beside send	-5	18		-6
one beside set				15
one beside shim	12
one beside show	21
one beside sister	-14			23
one beside slide	-7	14
one beside stand	29	-7
one beside start					19
one beside stick				4
one beside stop	33	-21
one beside stuff	7
one beside swap	-41			30
one beside sweat	-36	-17	19		16
one beside talk	7
one beside tell	29
one beside test	16
one beside think		6
one beside top	-17	30
one beside touch	-7	16
one beside trip	21	-17
one beside try	-9	-4	9	9
one beside turn	-20	11		14
one beside undefined has person	-19	-19	24
one beside undefined is person		-16
one beside undefined will other	42	-7
one beside use pp nobody	18			-13
one beside use pp other	-25	-5		32
one beside use pp person		-15	-9	9
one beside wait	-25	31		-10
one beside walk		-6	14
one beside want		10
one beside weep	17
one beside were	16
one beside work	26
one beside work b nobody	-15	45		-40
one beside work b person	19
one beside work bp other	-10	9
one beside work bp person	20			-18
one beside work bpp other	-16			35
one beside work bpp person				26
one beside work i nobody	6
one beside work i other	5
one beside work i person		6		-23
one beside work p other				13
one beside work pp nobody	-13			34
one beside work pp other				9
one beside work pp person				35
one buy imperative behind		13
one buy past behind	-42	-36		-12	25	28
one buy present behind	-27	10	-5	-12	26
one cue bought	-29				11	19
one cue came	-16
one cue need		39
one false	-18
one have past behind	18
one have present before	38
one kept	-28		29
one left #	12	-8
one left +	-7			12
one left ,	-14			30
one left .	-73	8		40
one left :	-5	-15		26
one left N		10		-20
one left Q	51	-24
one left T	-4
one left about	9		6
one left add				11
one left after				7
one left and	-29	22
one left as	15
one left back	32	-16
one left be		9		-7
one left behind	18			-10
one left between	23	-10
one left bring	-7	23
one left but		9
one left buy	-9			-6		11
one left by		-9		9
one left cut				25
one left do		6
one left down	20	-13		-7
one left except	23	-7
one left find	29
one left fit	-22			16
one left for	-22	47
one left from				16
one left get	-18	4
one left glue		-4		9
one left go	26	-6		-5
one left grab	-34	41
one left half	34		-10
one left him				-7
one left hit	11
one left hold	11
one left in				18
one left into	10
one left it	22	-14
one left it's	-5	19
one left its	-34			44
one left just	-7	17
one left keep		-11	18
one left lay	-4			13
one left lean	11
one left leave	12
one left like	40
one left lose	8
one left make	27
one left maybe		13	-32
one left me	-5	31
one left miss		12
one left need	-8	29
one left not	33
one left now				10
one left of	20		5
one left off	36
one left only		-15	18
one left open			12
one left or	56	-46
one left order	-14	14			16
one left out	24
one left over	24
one left paint	14
one left put	-11			26
one left rip		4
one left say	17
one left screw	-10			20
one left scribe	16
one left see	12
one left send		6			12
one left set	-6			17
one left sister	-16			24
one left sit	6
one left so	-67	84		-19
one left stick	-10			17
one left still		-14	12	-8
one left swap		-10		8
one left take		5
one left than	4
one left that's	10	6		-16
one left them		-37			20
one left then	-15	5		14
one left there's	12
one left throw				8
one left to	41
one left try	-20		12	16
one left under	37	-10
one left up					16
one left us						13
one left use	-13			18
one left want		19
one left what	19
one left with	-11			27
one left without	24
one left work	22
one measure modal behind	-27	34		-8
one measure owed behind	23
one measure present before	-24			31
one measure present behind	6
one move imperative behind			13
one move owed behind		-27		-8	23
one move past before	8	-15	-11	8
one move past behind	10
one move present before	6			-6
one move present behind	36
one named before finish		-21		15
one named before fixture	-8
one named before part	-38	19
one named before surface	18
one named before tool	-31	13	15
one named before word	8
one named here area		25		-11
one named here defect	33
one named here finish	-28	11	15
one named here material	-32
one named here part	-77	45		26
one named here role				12
one named here surface	21
one named here tool		8
one need modal behind	-5	7
one need owed before	38	-19		-7
one need owed behind		14
one need present behind	-6	19
one not ahead	5
one null copula before		18
one null imperative behind	15
one null modal before		11
one null modal behind	-5	22
one null none no	-8
one null owed behind	-21	13	9
one null present behind	-15	-9	26
one other copula before	-11	8
one other imperative behind	-6	37
one other modal before	23	-18
one other modal behind		16
one other owed behind	-9	28
one other past before	12	7	-19	-27
one other past behind	-11		10
one other present before	-7	17		-20
one right 
		23
one right #	-14	22
one right (	16	-24	-4	-21	27
one right +	-27	-36	-9	39
one right :	21
one right ;	19	-6
one right ?		15		-25
one right G		-9
one right N	-9	20
one right Q	7
one right T	5			-10
one right a	-21	43		-4
one right across		15
one right all	15			-12
one right already		-19			15
one right and	-30	8		6
one right are	-21	13		19
one right around	-11		-17	16
one right as		11		-12
one right at					7
one right be	13
one right before				-7
one right behind	25	-12	5	-22
one right both	19
one right by	18
one right call	11
one right can	11
one right cause	-4	18		-10
one right come	-9				19
one right crack	-17		24
one right do	-9	-7		18
one right don't	18			-9
one right down				-7	13
one right dry	22			-4
one right each		-8			10
one right for	-9	34
one right from	-25	14			5
one right get	-7	27		-28
one right hang				4
one right has	30
one right have	29
one right he	26
one right he's		-6	9
one right i'd	20
one right i'll	-7	21		-8
one right i'm	25
one right i've	-38	-18	41	-15
one right if	-7	16
one right in	-14			20
one right inside	10
one right into	-10			16
one right is	-6
one right it	-6			21
one right it'll		9		-10
one right it's	-7	16
one right leave	18
one right like	12
one right miss	-20	28
one right my		9
one right near	23	-9
one right need	-11	19
one right next	-17	34		-12
one right no	47	-30		-10
one right not	-18	30
one right now				5
one right or	21	-12
one right order	-24	26
one right over	-17			32
one right put	20
one right right	31	-7
one right say	23	-17
one right she	9	-19		5
one right side	15
one right since	-18			24
one right somebody		7
one right square	-20	27
one right stick	-6			14
one right still	17
one right than	5
one right that	5				-10	8
one right the	-28	36
one right then	-12	9
one right there		6		-9
one right there's	28
one right they		11
one right they're	20	-11
one right till				8
one right to	28			-12
one right too	-35	32
one right under	-7			14
one right up	19	-30
one right use	13	-8
one right we	30	-14
one right were	-11	-15		18
one right when	-9	23
one right where	32
one right which	23	-5
one right will	17	-5
one right with	4
one right without	13
one right would		5
one right you	32
one say modal behind	38	-27	-7	-10
one say past behind	37
one says copula before	-15	24
one says copula before not	15	-27
one says imperative behind		9
one says imperative behind not				4
one says modal before not	8
one says modal behind		25
one says modal behind not		11
one says none no	-10
one says none no not		5
one says owed before	11
one says owed behind		10
one says owed behind not		4
one says past before not	12	5	-25	-7
one says past behind				15
one says past behind not				12
one says present behind not	13
one see imperative behind		-19		18
one see past behind	10
one see present behind	-13	24
one sized	-53	30		6
one then buy b		5		-11
one then buy pp	-28	-19			46
one then have pp	-16			41
one then measure bp			9
one then measure bpp		10
one then measure i	9				4
one then measure p	22			-10
one then measure pp	4
one then measure s	-24	-5		43
one then move b	12
one then move i		-13	16	-10
one then move p	11
one then move pp	22			-8
one then move s	-8	21		-18
one then need b		9		-11
one then need pp		7		-19
one then need s	12
one then other bpp	14
one then other pp				-13
one then other s	-12			6
one then say b	12
one then say i	19	-12
one then say s	5
one then see b	13
one then see s	15			-19
one then undefined has	-5		19
one then undefined is				6
one then undefined will		8
one then use pp	18	-27
one then work b	-11
one then work bp	5
one then work bpp				24
one then work i	23
one then work pp				22
one then work s				9
one true		35
one use past behind				5
one verb add behind	-11	10		10
one verb be before	-9	7
one verb bend behind				11
one verb blow behind	-11	18
one verb bring behind	-11	28
one verb build behind	26			-11
one verb buy behind	-6	-15		-16	8	25
one verb call behind	12
one verb catch behind	16
one verb check behind	10
one verb clean behind	-16			24
one verb clear behind	13
one verb come behind		18		-5
one verb cure behind	-13	5		7
one verb cut behind				20
one verb dig behind	23			-13
one verb do before	25	-18
one verb do behind	18			-12
one verb draw behind		13		-16
one verb drop behind	5	-11
one verb fill behind	27			-17
one verb find behind	36
one verb fit behind	10			-18
one verb get before		19	-26	-28
one verb get behind	-27		17
one verb give behind	9
one verb glue behind	-21		15	6
one verb go behind	13			-7	9
one verb gonna behind		-30	19	-5
one verb gotta behind	-10	15	-8
one verb grab behind	-25	35
one verb hang behind	-8			6
one verb have before	38
one verb keep behind	-15		26
one verb land behind				8
one verb lay behind	4
one verb leave before	42		-33
one verb leave behind	15
one verb let behind		-4		7
one verb like behind	-14	24
one verb look behind		14
one verb make behind	-6			21
one verb measure behind		4
one verb miss behind	-13	-16		21
one verb move behind	5
one verb need before		17		-15
one verb need behind		12
one verb null before		18
one verb null no	-8
one verb open behind	29
one verb order behind	-10	5			21
one verb owe behind	-6	5			13
one verb paint behind	15
one verb pick behind	-8	5			15
one verb plane behind	10
one verb pour behind		-10	8	-6
one verb prime behind		13		-10
one verb pull behind				4
one verb put behind	-10			30
one verb roll behind	17
one verb say behind	6
one verb scrape behind	4
one verb screw behind	-5			17
one verb scribe behind	12
one verb see behind				13
one verb send behind	-29	32
one verb set behind				8
one verb shim behind	14
one verb ship behind	-22		15		18
one verb show behind	7
one verb sister behind	-14			23
one verb slide behind	11
one verb splice behind	22			-4
one verb stick behind				12
one verb stuff behind	5
one verb swap behind	-18	13		11
one verb sweat behind	-41	-15	18		15
one verb take behind	9
one verb tell behind	5
one verb touch behind	-14	19
one verb try behind	-9	-4	9	9
one verb turn behind	22			-4
one verb want behind		17
one verb would before	-9	15
one whole clause	-16
one work imperative behind	-7
one work modal behind		9
one work owed before	17
one work past before	-29			28
one work past behind				53
one work present before	-8	-11			16
opens &	17			-8
opens +	8
opens >		-7	8	-8
opens [	7
opens ]					8
opens alright	6
opens anyways			7
opens because	7
opens boss	23
opens cause	26
opens clause area	-10			24
opens clause count	-30
opens clause length	-33	6		27
opens clause one	-25	13
opens clause pack	-30
opens clause volume	-47		12
opens clause weight	-34	6
opens cuz	16
opens hey	10
opens hi	9
opens jefe	23
opens man	7
opens note	20			-7
opens now	15
opens ok	14
opens otherwise	29			-6
opens please		29
opens plus	-8	25	-9
opens right	27
opens yes	9
opens ☐	-21	20		8
pack after bought far	-20	-10	27	-9
pack after bought here	-29	-28	-27	-25	47
pack after bought sentence	-13	-48	-29	-37	62
pack after have far	-44	6	14	-20
pack after have here	22	-9	12	-45
pack after have sentence			21
pack after need far	-11	11	25	-41
pack after need here		50
pack after need sentence		24		-26
pack after none far	-48		34
pack after none here	-8	11
pack after returned sentence		-15	-33	-31	5	22
pack after used here		-6		27
pack after used sentence	-19
pack bag		4		-15
pack before it ate	-7			20
pack before it back	-15	-6		-11		52
pack before it bought	-35		-13	-36	54
pack before it came		-33	26
pack before it have			58	-27
pack before it lacks		50	-12	-22
pack before it need		46
pack before it used				20
pack behind it ate	-30		-41	19		29
pack behind it back	-37	-6		-10		47
pack behind it bought	-20	-38	-6	21	14
pack behind it came	-9		29	-23
pack behind it lacks	-23	16
pack behind it need	-29	38	9	-10
pack beside are	10	-7	-27	6
pack beside arrive	8	-29	8	-21
pack beside bag	53	-39	-32	-34
pack beside be			-11	14	5
pack beside bed	-7	7	-14
pack beside blow	-17	-23	-17	28
pack beside box	-23	-5			17
pack beside break			-11	15
pack beside burn	-13			37
pack beside buy	-17			-7	31
pack beside buy b nobody		5
pack beside buy b other		51
pack beside buy b person	-10		-9	-17	21
pack beside buy pp nobody	-20	-16		-13	39
pack beside call			-17	7
pack beside change		27	-5	-14
pack beside clean		19	-20	-10
pack beside clear	-8		11	-10
pack beside come	-21		12		11
pack beside consum	-25	-20	-23	37
pack beside count	-37	21	19	-22
pack beside cut	10			-22
pack beside deliver	-35	-15	14	7
pack beside do	-12	4	-7			14
pack beside eat	-17			35
pack beside empty		19		-22
pack beside figure		10	-8	-10
pack beside fill		-18	-5	17
pack beside find	-19	-16	27	-5
pack beside finish			-27	21
pack beside get	-17
pack beside give	-8	-30		-25	21
pack beside glue	9
pack beside go				14
pack beside grab	-21	35
pack beside hang	-39	-37		45
pack beside has	42	-28	-34	-6
pack beside have			20
pack beside have b nobody	6	-15	5
pack beside have b other	-15	13	4
pack beside have b person	-7		47
pack beside have pp other		-20
pack beside have pp person	22	11	-29	-23
pack beside is	-8	-5	31
pack beside lay	-8	7
pack beside leave			23
pack beside like	-22	5	-34	30
pack beside make		-8	-14	15
pack beside match	-15		14	-26
pack beside measure bp other	-4	-19	30	-33	-7
pack beside measure i other		-19	20	-10
pack beside measure p other	-18	-33	15
pack beside measure s other	-19	7	-34	-35	30
pack beside miss	-7	11	-16		14
pack beside mix		-20	-21	8	6
pack beside move			13	-30
pack beside move b other	14	5		-34
pack beside move p nobody	-17			33
pack beside move p other	-9	-48		25		5
pack beside move p person				7
pack beside move pp person			21	-7
pack beside move s other	-8	19	7	-41
pack beside need		19
pack beside need b nobody		52
pack beside need b other		28
pack beside need s other	-33	41
pack beside need s person	-11	-5		18
pack beside nothing	-46		7
pack beside open		-24	5
pack beside order		8
pack beside other b nobody	-18	30
pack beside other b other		43
pack beside other b person			-36	9
pack beside other i other	-16	23	-6	-21	7
pack beside other i person	-18	26	-18	-20	12
pack beside other p nobody	-36	-45		-6	33
pack beside other p other	-14	-44		56
pack beside other p person	-8		35	-20
pack beside other pp nobody	-21	-31	6	-21	32
pack beside other pp other	-11		-5	14
pack beside other pp person	-27		17		8
pack beside pack	6	-29	-23	11
pack beside patch			-28	10
pack beside pick		28		-14
pack beside pour		-22	-28	27
pack beside pull	39	-9	-16	-17
pack beside put	-25			11
pack beside return	-8	5	-11	-19		18
pack beside roll	-23	-11	-24	29
pack beside run	-16	6	-21			24
pack beside say	-13	27		-33
pack beside say b other	-38	61	-18	-38
pack beside say b person	-12		-15	13
pack beside say i person		14		-11
pack beside say pp person	34	-24	-19	-20
pack beside say s other		-22	16	-27
pack beside seal		8	-24	5
pack beside send	-13	10	16	-21
pack beside set	-6	-13	-27	36
pack beside sit	17	-26	4	-16
pack beside stack	-15	-13	29	-28
pack beside stand	-9	9	-21	7
pack beside stay	10	-28	10	-24
pack beside stuff		-28	-4	22
pack beside swap		-15		16
pack beside take	-33			13		14
pack beside tell	-26		-12	26
pack beside throw	-41	14	-10	29
pack beside turn	-19	-20	33	-33
pack beside undefined has other	18	-15		-11
pack beside undefined is other			20
pack beside undefined is person	-22	22	-10	15	-16
pack beside undefined will other		-5	-13	15
pack beside use				15
pack beside use b nobody				16
pack beside use b other	-45	-26	30
pack beside use b person	-28		14
pack beside use pp nobody				19
pack beside use pp person				45
pack beside want		19
pack beside work b nobody	16	-13	-21
pack beside work b other	-37			10	12
pack beside work b person	-17	-24	21	13
pack beside work bpp nobody	7	-30	-21	25
pack beside work bpp other	-52	7		25
pack beside work bpp person	-4	-49		7		6
pack beside work i other	11	-23	-24	10
pack beside work p other	-19		-5	25
pack beside work p person	-28	9	-25			19
pack beside work pp nobody	-12	-21	-14	54
pack beside work pp other				37
pack beside work pp person		-14		41
pack beside work s other			27	-31
pack box	14			-8
pack bucket	6			-19
pack bundle	21	-12	-11	-5
pack buy imperative behind		23
pack buy modal behind	-32	42
pack buy past behind	-20				29
pack buy present behind		-21	-21	-26	25
pack can	-9	13
pack carton	-19	16	10	-20
pack cartridge		10	-20
pack coil	7
pack cue ate	-13			41
pack cue back	-22					39
pack cue bought	-48	-5	-28	-10	64
pack cue came	-22	-31	45
pack cue have			71
pack cue lacks		20
pack cue need		58
pack cue used				16
pack drum	30	-16
pack flat	52		-5	-12
pack have present before		7	-27	-18	12
pack have present behind			25
pack kept	-6	-16	45	-7
pack kit	6			-6
pack left #	-44		28
pack left (	-47		33
pack left ,	-44			23
pack left -		10		-19
pack left .	-9		24
pack left :	-50		37	-4
pack left G	-57	15		32
pack left N	-27	-19	-9	27		10
pack left Q	-37	53		-14
pack left T	-63		17	4	15
pack left a	6	-33	-25	-28	32
pack left about	-47			22
pack left all	-4
pack left already	-44	-12		34
pack left also	-36	34		-36
pack left and	-14	27
pack left at				4
pack left be	-20		-36	13	15
pack left because	19		-10
pack left bring	-5	9	7
pack left burn	-21	-12		28
pack left but	36		-17	-32
pack left buy	-23	18			7
pack left by	19			-9
pack left cause	21
pack left change	7	20	-8	-42
pack left do		-19	-14	22
pack left eat	-8		-7	24
pack left figure	16		-6	-9
pack left find	-24	-22	28	-4
pack left for		9	-22	-33	14
pack left from	26		-29	-27
pack left get	-43		42	-25
pack left glue	15
pack left go		-26	-36	28	-8
pack left grab	-12	17
pack left has	40	-27	-33	-6
pack left in	15			-5
pack left is	-17		17
pack left it	-13	7	27	-43
pack left it's	-18	5	-18	-35	23
pack left last		-25	21	-4
pack left leave	-20	-32	54	-31
pack left like			-25	28
pack left maybe	5	-25	8	-6
pack left mix	-8	-18	-13	23
pack left of	20	-57
pack left off	33	-14		-17
pack left on	-5			12
pack left only	-50	-7	41
pack left open				8
pack left order	8
pack left out	43			-23
pack left over	32	-13
pack left plus	-37			15
pack left pour				9
pack left put	20		-24
pack left return	-6		-12	-21		19
pack left set	5	-9	-6
pack left short	-14	38	-20
pack left so	-30	85	-24	-31
pack left swap	-23			29
pack left take	-17	-6		34
pack left that's	-31	27	-66	29
pack left the	-9	-62				33
pack left there	-8	5	13	-27
pack left there's		-39	58	-52
pack left through				38
pack left to		-42	24
pack left under	28			-13
pack left up	-15	6		5
pack left us	-26	21	9
pack left use				35
pack left want	-30	56
pack left with	-28		-52	53
pack length		22		-29
pack list have	6	-24	20	-29
pack list need	-20	49	-12	-6
pack list used	-27	-30	-24	42
pack measure past behind	-22		-14	13	12
pack measure present behind		-26		-28	17
pack more		39	-12	-21
pack move past before	-33		52
pack move past behind				8
pack move present behind		-20	21
pack named before area		-8	-5	20
pack named before finish	-25		9	9
pack named before fixture	-12			6
pack named before material	-4
pack named before part	49
pack named before surface		-10		12
pack named before tool			14	-9
pack named here defect		-19
pack named here finish	-61	6
pack named here fixture	14		-10	-26
pack named here material	-64
pack named here part		-4		-27
pack named here surface		19		-27
pack named here word	-58
pack nameless	-31	7	-39	19		15
pack need modal behind			5
pack need owed behind		7
pack need past before	-19	36	-23	-10
pack need present behind	-28	43		-12
pack not ahead	-27	53
pack null copula before		25	-37
pack null copula behind	-22		18
pack null imperative behind		30	-5	-8
pack null modal before		4		-24
pack null modal behind	-11	28	-22	-16
pack null none no	-31
pack null present behind		-12	21	-17
pack other copula before			7
pack other copula behind	-22			5
pack other imperative behind		17
pack other modal before	-44	15	21	-40
pack other modal behind	-9	20
pack other owed behind		15	-18	-10
pack other past before	-7	14	-10	-32
pack other past behind	-7	-20	13
pack other present behind	-15		-29		21
pack pack	16		-11	-10
pack pail	-43	-30	37
pack pair	26		-6	-15
pack pallet	-12	-23	30	-19
pack piece		14		-16
pack pointing		29		-21
pack qt	-28		-5	-7		22
pack right 
	-13	48	-42
pack right #	-27	38
pack right (	-17	23		-19
pack right +	-26		13
pack right ,	-31
pack right .	-18			15
pack right :	34			-18
pack right ;	-44		37
pack right G			5
pack right Q	-8			19
pack right T	-41	28
pack right and	-34
pack right are	-9	-33	29	-36	5
pack right around	-15	-9		21
pack right at	-12		-13		23
pack right back	-11	25		-18
pack right be	8	-9	5
pack right because	-11	8	-8	6
pack right before		17		-14
pack right behind		9		-22
pack right but			17	-26
pack right by	-5		27	-14
pack right cause	-5		-5		18	-7
pack right come	-25	-27	23	-9		6
pack right do	-40	20		11
pack right don't	-34	-4	-20		22
pack right down	-52	19		17
pack right for	-21	33
pack right from				-40	15
pack right get	-12	16			-5
pack right go	-38	-44	-27	70
pack right hang	-49	-8		36
pack right have	39	-17	-6	-25
pack right here	-18	-18	31	-22
pack right i	-4
pack right i'll	-23	10	-17	8
pack right i'm	-11	17
pack right i've		7	5	-17
pack right in		-33	47
pack right is	-20		10	15
pack right it	-12	-27		26
pack right it's		-14	-11	17
pack right leave			57
pack right more	27	-11	-5	-19
pack right need	-26	19
pack right no	50	-38		-20
pack right not	-25	23		7
pack right now	-25	-32	-28	15	23
pack right of	-38			6
pack right on			18	-6
pack right only	10	-19		11
pack right out	26			-19
pack right over		-41	22	-26		14
pack right plus	-7	9	-6	8
pack right she		8
pack right short		12	-20	-13	-5
pack right sit				-9
pack right so	6
pack right still	-35	-22	35	-15
pack right that	-26	-9	6	5	-8	16
pack right the	-42	22
pack right then	-39	20	-34	26
pack right there's	-50		-10	36
pack right they			10	-21
pack right till	13
pack right to	-22	17	10	-43		9
pack right too	5	12	-17
pack right under	5	-36	13	-9
pack right up	19	-35		5
pack right use	-31			58
pack right want	-24	34	-20	-14
pack right we	-29	19	-6	16
pack right where		-23	-8	16
pack right which	-33	-24	35	-19	12
pack right with	18	-17	-18	9
pack roll		18		-11
pack say imperative behind		24	-15
pack say past behind	23	-35	8	-30
pack say present behind	-10	11
pack says copula before not	-29	11	24	-30
pack says copula behind	-23		18
pack says copula behind not	-35	28			4
pack says imperative behind	-6	50
pack says imperative behind not	25	-20
pack says modal before	-22	13	10
pack says modal before not	-31	25	-15	10
pack says modal behind		37
pack says modal behind not	-25		26	-20
pack says none no	-31
pack says none no not	-5	37	-30	-42
pack says owed before	21	9	-31	-20
pack says owed behind		34
pack says owed behind not	7			-9
pack says past before	-16		12
pack says past before not	-23	-8	-11	25
pack says past behind	-4			16
pack says past behind not				13
pack says present before	-9	8	-21
pack says present before not		5	-13	-13
pack says present behind	-24		9	5
pack says present behind not		4	-5
pack set	53	-18	-24	-43
pack sheet	19		-14	-30
pack sized	-27	13
pack sleeve	24	-7	-13	-15
pack sold so false	-39
pack sold so true	-42
pack stick			-4
pack strip	29		-18	-8
pack then buy b		-27	21
pack then buy pp	-20	-33			28
pack then have b			-17
pack then measure i		-5		8
pack then measure p	-10		11	-5
pack then measure pp	-8			5
pack then measure s	29
pack then move b	-39	-36	35	12
pack then move i			11
pack then move p	-25		-27	54
pack then move s	-10	-23	15	8
pack then need b	-34		39
pack then need pp	-34	33		-6
pack then need s	-34	12	19	-15
pack then other b			4	-5
pack then other bpp	-29		-32	32	-6
pack then other i	14			-22
pack then other p		-25	-18	11		32
pack then other pp	23	-25
pack then other s		-5		-14	14
pack then say b	-8	31
pack then say pp	-10	27
pack then say s	6	-7	9	-10
pack then see b	6
pack then undefined has		27		-13
pack then undefined is	-25			7
pack then undefined will	-14	22
pack then use b			-8	10
pack then use pp		-21	-16	17
pack then work b					6
pack then work bpp	-26	-8	12	4
pack then work i	-27		26
pack then work pp		-16
pack then work s		9
pack tin				-24
pack tub	38			-10
pack tube	8			-24
pack use imperative behind	-11	-11		37
pack use modal behind	-10	15		-11
pack use past before	-5			39
pack use past behind				35
pack use present behind	-29	-20		25
pack verb ask behind	11		-13	-18
pack verb be before			7
pack verb be behind	-23			5
pack verb blow behind	-15			19
pack verb burn behind				20
pack verb buy behind	-18				23
pack verb call behind	5	7		-19
pack verb can before		5		-28
pack verb caulk behind		7		-10
pack verb change behind		17		-8
pack verb come behind	-24	-22		-27	28
pack verb count behind	-25	10	19	-25
pack verb cut behind	-12	30	-5	-27
pack verb do before	-44	11	23	-38
pack verb do behind	-20			13
pack verb figure behind	16
pack verb fill behind	-6			9
pack verb find behind	-19	-16	27	-5
pack verb finish behind	-8	-25	-31	30
pack verb get before	-20	25	-45	-23	11	11
pack verb give behind	-8	-30		-25	21
pack verb glue behind		-19	-9	13
pack verb go before	-31	-20	-18	38
pack verb go behind				29
pack verb grab behind	-26	38
pack verb hang before	-39	-10	-26	45
pack verb hang behind	-8			16
pack verb have before		7	-27	-18	12
pack verb have behind			22
pack verb lay behind	-29	7	5
pack verb leave before	-26		55
pack verb leave behind		-23	31	-10
pack verb make behind	-10	-22	-15	28
pack verb mix behind		-8	-4	12
pack verb need before	-21	31	-10	-9
pack verb null before		25	-37
pack verb null behind	-22		23
pack verb null no	-31
pack verb open behind				9
pack verb order behind	7
pack verb patch behind	-36	20	-19	17
pack verb pick behind	-13	17
pack verb pour behind		-12	-12	16
pack verb pull behind		-26		7
pack verb put behind	-29	4	-9	6		6
pack verb return behind	-13	-10		-9		21
pack verb run behind	-7	-6				27
pack verb sand behind	-7	26	-15	-22
pack verb say before	7	6	-16	-23
pack verb say behind	-21	14	22	-31
pack verb send behind	-31		10	7
pack verb set behind	-8	-26	-12	31
pack verb sit behind	23	-18	-13
pack verb swap behind	-9	-18		25
pack verb take behind	-4	-10				16
pack verb tape behind	-8	20	-12	-14
pack verb tell behind	-20		-14	23
pack verb throw behind	-39	11	-16	12	12
pack verb use before				14
pack verb use behind				35
pack verb want before	-20	30	-19	-12
pack verb want behind	-31	35
pack whole clause	-47
pack work imperative behind	-7	7
pack work modal before	-32	8	-15	32
pack work owed behind	-41	43	-10	-22
pack work past before		-35		21
pack work past behind	-13			42
pack work present before	-24	20
pack work present behind	-34	-19		51
plural area		-5	-8	7
plural count	-33			18
plural length	10
plural volume	-34	24
plural weight	-42	23
pointer after have here	20
pointer after need here	21	-7
pointer after need sentence						14
pointer after none here	7
pointer after used sentence				7
pointer before it have					11
pointer before it need	-12	-15	18	9
pointer before it used				14
pointer behind it back	12
pointer behind it have					6
pointer behind it need			11
pointer behind it used	16
pointer beside get					15
pointer beside need	17	-11
pointer beside nothing					18
pointer beside other p other					17
pointer beside put				12
pointer beside undefined is other	13
pointer beside work b other	24
pointer beside work bpp person	-20			24
pointer beside work pp other	22			-11
pointer cue need		-13	11
pointer kept	10
pointer left Q	-10			20
pointer left big	21	-5
pointer left right	-20	15			19
pointer left the	16
pointer name flawed	-14
pointer named before fixture	16
pointer named before part	18			-16
pointer null copula behind	-8				8
pointer null none no	26			-8
pointer other copula before					13
pointer other copula behind	14
pointer other past behind	-32		9		15	16
pointer right ,				7
pointer right and	30			-15
pointer right are	-4				20
pointer right in				-11	14
pointer right so	-4		15
pointer says copula before					11
pointer says imperative behind	29
pointer says modal behind	19
pointer says none no	26			-8
pointer says past behind	-23			15
pointer then need b			13
pointer then undefined is	-10			12	7
pointer verb be before					13
pointer verb be behind	14
pointer verb get behind					15
pointer verb null behind	-8				8
pointer verb null no	26			-8
pointer work past behind	-5			13
pointing	-33			4
right 
		17
right 
 *	5	-30	-22	27
right 
 G	-8			7
right 
 N				-18
right 
 Q	-25	33	-27
right 
 need		11
right 
 •	12	-5
right !	19
right "	-19	-20	31	-34
right # #		5
right &	-5			12
right & Q	-18	7	-7	16
right '	18
right ' G	4
right (	-11
right ( G	-15	23		-6
right ( Q			7
right ) 
	-14		11
right ) .	7	-20
right +	-19
right + G	-18		6
right + Q	-32	20		5
right + a	-29	29
right , N					17
right , a	-11	29		-8
right , about		-4
right , all		-34		25
right , ask	14
right , back	15
right , because	26	-22
right , both	23
right , bring	28			-22
right , but		-28	37	-32
right , buy	17	-10		-5
right , by	22
right , cap	21			-14
right , change	18			-6
right , check				10
right , clamp	15
right , clear		11	-8	-5
right , client	-5		26	-15
right , code		12
right , cover	14
right , cut		-9
right , do	-32		8	30
right , drain	-15			23
right , drill	9
right , drop	17
right , dry	-19	-6		36
right , enough	-7	-8	21	-18
right , fill	23
right , find				13
right , fine	11	-5
right , finish	-16	21
right , fix		-14		11
right , foam	16
right , for	16	-34	13	-10
right , glue	-6			20
right , go	-9		14
right , good	-5			15
right , hairline	11
right , half	25	-24		-29
right , hang				10
right , has	24	-21
right , have		16	-6	-21
right , he	5
right , he'll		-13	18
right , hit	-7			18
right , hold	-6			12
right , hole			6
right , hot	19
right , i	14			-12
right , i'll	10
right , i'm	-13	21		-5
right , i've	22	-17
right , in	6			-21	10
right , is		-15			9
right , it's		-16	13
right , kitchen	37			-24
right , land	-34			-8	34
right , last	-19	-11		24
right , leave	15
right , let	16
right , level	15
right , look	18
right , move	6
right , mrs	10
right , must	18
right , my	10
right , n	17
right , need			15
right , new	39			-10
right , no		-25
right , nobody		-6	-8	14
right , none	-12	-35	-21	10	-14	23
right , not	16	-22
right , nothing	8
right , now	19
right , ok	4
right , on	20	-19	15	-34
right , open		-25	30	-17
right , order	23			-8
right , pack	21
right , paint	-13			18
right , please	-5	18
right , plumber	7
right , pull		5
right , pump	12
right , put	-8	10
right , quiet	-13	-17	-5	23
right , raise	22	-5
right , rehang	14
right , reorder	13
right , replace	11
right , run	4
right , same	-22	6
right , sand				12
right , screw	7	-15	-9	8
right , send	30
right , set	8
right , shim	12
right , short	-9	-6	15
right , should	24
right , so	38
right , solid	-43			46
right , still	29			-8
right , swap	8	-18
right , take	12	-10
right , tape	34			-21
right , tell	21	-4
right , that				-9	6
right , the	10
right , then	34	-31		-18
right , they						15
right , they're	-20	-15	18	-15	19
right , tight	-13	-11		21
right , to	-8	15		-30
right , trim	5
right , turn	16
right , unit	13
right , use	19	-4
right , wait		-12	-8	12
right , wall	13
right , want	11
right , water	13
right , we			5
right , white	-38	41
right , will		7
right , with	-9	-22		15
right , work	32			-22
right - G	22
right - Q		-4		9
right - get	17
right . 
		-7	21
right . #		20
right . ,		-7		11
right . N		-9		4
right . Q		-13		10
right . all	-15		14	-29	14
right . also		22		-5
right . and		25		-25
right . ask		8
right . back		13
right . bottom	7
right . box	-5			15
right . bring	12	-23	9
right . but		-14	-7	14
right . buy	19
right . caulk		15
right . check	18			-11
right . client		-8	17	-10
right . clip	11
right . closet	17			-9
right . could	23			-15
right . customer	19
right . cut		-12		7
right . do	17			-6
right . don't	24	-11	-9
right . drain	-7			5
right . drill	-11	-12		18
right . existing	12
right . find	-5			12
right . finish	27
right . first	28	-25
right . fit	21
right . floor	-18		18
right . for	-5	-8		9
right . get	-6		26	-18
right . glue	5	-14			10
right . go		12
right . good	-11			16
right . grout	23		-13
right . hall	-6	5		5
right . have			-9	17
right . he	7
right . hinge	-40		5	-9	20
right . i'd	22		-8
right . i'll	24	-13	-6
right . it	23		-14
right . it's	25
right . keep	5
right . kitchen	-25		-8	31
right . landlord		-6	13	-15
right . latch	6	10		-26
right . leave				13
right . lift		12		-13
right . miss	26			-18
right . move	6
right . need		-15
right . new		6		-5
right . no			7
right . nobody	-8	-10		10
right . nothing	17
right . now	-19	-12	15	7
right . ok	32			-19
right . old			-10
right . on	21	-22
right . open	-18		12		16
right . order	-9	-16		22
right . other		-5		4
right . owner	24	-15
right . paint	-30	7		24
right . pick	-14		22
right . please		-6	13
right . plug	15
right . pull	26
right . pump	26	-12
right . put	17
right . rain	16	-20	7
right . recheck	-19		-12	23
right . rehang	12
right . return		15	-6	-14
right . screen	24	-12		-5
right . screw	-11	-33	28
right . send		-28		7	-14
right . she	-12			11
right . short		-13	8
right . so	6
right . somebody	11	5		-9
right . stain	6
right . still	34	-23	-7
right . swap	14
right . take	-11	-5	17
right . tell		11
right . tenant	-8		18	-5
right . that's		19	-6	-26
right . the	-6			25
right . there's	-5			10
right . they	23	-14
right . waste	18	-7
right . water	8			-9
right . we	42	-29		-34
right /	-14		5
right / G	-15	25		-17
right : 
	27
right : G	12
right : N	9
right : box	21
right : hinge	26	-9		-18
right : kitchen	16
right : need	-14	22		-14
right : old	5
right : the	11
right : use	18
right ;			16
right ; G	-52	-8	45
right ; i	-14	25
right ; the	19
right =			8
right ?	36	-6
right ? #	-9	17
right @	-4
right @ Q	-20			17
right G				16
right Q 
	28	-8
right Q #	12	-18	10
right Q -		15
right Q .	48	-14
right Q G				19
right Q Q	-18	18
right Q all	13			-9
right Q at	15
right Q by	6
right Q deep				18
right Q for		6
right Q high	13
right Q i	33
right Q in	28
right Q is				4
right Q it				8
right Q leave		-7	-17	21
right Q more	18	-5
right Q no	7
right Q not	5
right Q on	13
right Q out	12
right Q short	9
right Q so	8
right Q the		-14		11
right Q then	6
right Q wide	18
right Q with	6
right T 
	20
right T Q	19
right T after	22
right T and	24
right T at	5
right T for	-9	-6		18
right T from	-4				20
right T he	5
right T i		-5			5
right T if	36	-16
right T in		8
right T it	26	-19
right T need	23	-14
right T once	17	-14
right T the	30			-19
right T then	15
right T there's	34			-17
right T they	-9				17
right T to	-5	11
right T use	-11	20
right T when		11
right T with	19
right a	5
right a .	16
right a N	-18	20
right a Q		32		-16
right a little	9
right a new	5
right a side	-12	4		10
right about	4
right about the	21
right above	13
right above the	19
right across	17
right across ,	7
right across the	6
right adjust ,	5
right after	22
right after Q	16
right after T	9
right after all	-23	9	18
right after the	19			-14
right again so	4
right all ,	13
right all Q	29			-15
right all around	34
right all go	-14	-7	11	12
right all in	21
right all nail	-22			24
right all over	31
right all round	5
right all the	25
right all up	-21			27
right along				10
right along the	-6			23
right already	-11		20
right already #	31			-5
right already ,	31		-13
right also the		14		-10
right and G	-26	30		6
right and N	-30	7		15
right and Q	-53	27
right and T	8	6		-20
right and a	-33	21
right and about	-9	20		-5
right and all	12
right and both	-12			19
right and clamp	18
right and clean	14
right and come	-15	19
right and cut	-19	13
right and do		12
right and don't		23
right and down	19
right and drop		9
right and every			-10	18
right and everything	27			-15
right and fill	25			-24
right and find	13
right and foam	-39	-5		43
right and for	-18		18
right and give	6		9	-15
right and go	6		15	-24
right and half	12
right and hang	16
right and have				13
right and he		5
right and he'll		-15	10
right and he's	-4	15
right and hit	21			-6
right and i'd	-24	-17	31	9
right and i'll		27
right and i'm	-22			7
right and i've	-8			15
right and is				17
right and it'll				4
right and leave	-8			16
right and let		12	-7	-10
right and make	-4			8
right and mud	26	-12
right and my	6	-13	5
right and need	-16	-9	30	-7
right and no	15	-16
right and nobody		4
right and not	-27	-15	-26	41
right and now				13
right and of	-19			21
right and oh		19
right and on	-28	19		14
right and order	18
right and pack	-15	12
right and paint	32	-11		-20
right and plug	-15			20
right and pull	11
right and put	-9	-19		32
right and redo	15
right and reset	8
right and run	28			-14
right and screw	32			-7
right and seal				13
right and set	24			-5
right and she's		-22		26
right and somebody		10	-13	-10
right and stick	11
right and tape	-5			16
right and tell		17		-20
right and that's	-4
right and then		11
right and there				7
right and there's				21
right and they		-9			15
right and they're		-15		17
right and tube	18
right and under	27	-9		-14
right and up	17
right and use	-19			24
right and we			27
right and we're		-6		14
right and what	26			-15
right and when		14
right and while	-33	25		6
right and you				20
right and you'd	-6			14
right another	24
right any	8
right anyway	20
right are Q	9
right are at	32
right are bolt	15
right are build	-9			19
right are crack	35			-9
right are dead	22			-6
right are down	-22			29
right are dry	19			-5
right are fine	28	-5
right are glue				6
right are go		11	-4	-22
right are good			14
right are hang	-19			39
right are in	-29	-13	37	5
right are loose	24			-8
right are miss	6	11	-12	-41
right are notch	25
right are on				6
right are out	10
right are paint	25			-13
right are rust		9
right are screw	28			-9
right are shot	10
right are sit	11
right are stand	23			-5
right are still	12
right are the	4
right are up				21
right aren't	15		-14
right around				13
right around it	-21	32
right around the				15
right arrive			8
right arrive ,		-9	15	-8
right arrive with	-47		42			16
right as a	14
right as the	7
right ask	21
right ask the	11
right at G	39			-7
right at N	7
right at bottom	9
right at home	-43	-13	48
right at it				7
right at lot	8
right at mrs	10
right at my	11
right at number	8
right at the	17
right at top	5
right back						15
right back on		8
right back out	17
right bag	-7	17
right be N	9
right be Q	11
right be a	5
right be bend	30			-14
right be break				4
right be cut	18
right be dead	13
right be dry	23
right be eat	-12			16
right be go	-27	12		21
right be hang	12
right be here	-10				18
right be hold	17
right be in	27
right be just	6
right be leak	-23	14		19
right be leave	-30		16			25
right be loose	17
right be miss	10
right be never	12
right be on	4
right be open	11
right be out	8
right be pack	20
right be set	23			-5
right be sit	7
right be split	-5			11
right be stick	4
right be supposed	15
right be the	5
right be up	6
right be wire	5
right be wobble	5
right because Q	-28	32
right because is	18		-4
right because the	8
right bed	12
right before G	16
right before he	13			-4
right before i		13
right before that		6
right before then	14
right before they		9
right behind is	13
right behind it	15
right behind that	-6			12
right below	11
right below is		4
right bend	15
right bend ,	16
right beside it	19
right between	11
right block	8
right board	11
right bolt	14
right book	8
right book for	6
right both				22
right both of	14
right box	5
right break	9		-5
right break ,	-21			11
right break in	40	-5	-25
right bring				-14
right bring Q		-18	19	-14
right bring me	26	-18
right build	-5			17
right burn .	5
right bust	33
right but Q	-7		24
right but i	12
right but i'm	-21		24
right but is		16
right but it	23
right but it's	-8	-6	10		8
right but no	6
right but not	11
right but she	7
right but that	7
right but that's				8
right but the	28
right but they're	17
right buy	13	6			-21
right buzz	12
right by G	38	-17
right by N	-13	19		-5
right by Q		11
right by the	6
right by then	27	-15
right call	15
right call the	30			-9
right can be	5
right can do	11
right can go	26
right can't go	25
right cap	-6		8
right cause i	-20		-15		20
right cause it	7		9	-16
right cause she	12
right cause somebody	12
right change				21
right change ,				5
right check	7
right chew	10
right chip	11
right chip ,	30		-7
right clean	4
right clip	-6	-7		14
right coat	-11			17
right come Q	-16	-6	18
right come T	-8		16
right come and			20	-18
right come back	36
right come bend	-11		11	-14		19
right come down	20
right come from	9
right come in	-13		15
right come off	27	-5
right come on	21			-7
right come out	25
right come to	20
right come up	37
right come with			16
right come without	13
right complete	14
right core	-12	13
right cover	4
right crack ,	-31	28		10
right crack .	26
right crack and	20
right crack corner	16
right crack when				7
right crook	12
right crown	21
right cup		10
right cup ,	11
right cure		14		-7
right curl	12
right cut Q	7
right dead	31	-16
right dead i	25	-24
right delaminate	14
right deliver	-9	-9	19	-11
right dent	21
right die	10
right do 
	31			-13
right do ,	37
right do .	26
right do Q				11
right do in	10
right do it	-22	21	-24	8
right do not	14
right do the			6
right do with	22
right doesn't	8
right don't ask	-6			16
right don't let	-14			6
right dont	-12	20		-7
right down ,	-13	-16		35
right down .	22
right down Q				9
right down T	36			-7
right down and	42			-10
right down by	32			-14
right down from	24
right down in	24
right down it				11
right down on		15	-4
right down to	12
right draw		9
right drill at	23			-12
right drip	25
right drip from	17			-10
right dry	14
right dry ,	9
right dry as	10
right each		-5		10
right each .	16			-4
right each side	-9			16
right eat	11
right empty	10
right end	20
right every	5
right every time	4
right everybody	10
right extra	-28	8	18
right fail	16
right fill	21
right finally	-24	-5	19	16
right find	14
right fine	8
right finish ,		-8	-13	12
right finish .	8
right fit	-14			34
right fit ,	-36			44
right fix	-20			34
right fix ,	-26	-12		30
right fix that	-11			16
right flash		-7		12
right float	25	-8		-14
right flush	27
right for G	-16	20
right for N	-23	-11	-18	-17	37
right for Q	13
right for T		6
right for a	26	-11
right for all	28	-18
right for each	33	-30	-10	-13
right for it	-28	29	8
right for me	-6	20
right for mrs					16
right for now	-17			38
right for that	-58	48	5	-35		5
right for the	-7
right frame	18
right from Q	-15			23
right from T	-6		16
right from my	-22		10	13
right full		-16	16	-20
right get Q	9	-5	5
right get a	30
right get deliver						19
right get in	-14			20
right get it	27			-7
right get me	44	-28
right get the	-40	43	-7	-15		11
right get to	-21	30
right give me	14
right glaze	7
right glue	-10			33
right glue and				12
right glue up	-10	-8	-12	23
right go #				11
right go ,	-17	-9		39
right go .			-12	24
right go Q				6
right go T	7
right go and	-25	-10		33
right go back			13
right go down	15
right go from	17
right go in				26
right go into	-23		-17	36
right go off	11
right go out	24			-21
right go round	5
right go soft	12
right go the				7
right go there				10
right go through	25
right gonna be		15		-8
right good	-10	-22	26		7
right gotta sit	9
right grab		-17		5
right grout	12
right hang				10
right hang ,	-19			37
right hang .	28			-14
right hang Q	24
right hang and				7
right hang but	7
right hang by	18
right hang on	-9		11
right has	5
right has Q	11
right has a	20
right has get	22	-11
right has go	8
right has no	28
right has the		-11			18
right hasn't		12
right have	4
right have Q	14
right have a	32
right have back	10
right have be	7
right have come			11
right have crack	5
right have let go	7
right have no	25
right have the	15
right haven't	-12	10	8
right he say	12
right he want	15
right he'll	17
right he's	6
right he's get	-7		15
right head	-17	18
right her	14
right here			28
right here ,	-30	-10	40	-9
right here .		-9	21	-13
right him	11
right hold it				5
right hold up	7
right hollow	19
right hook				7
right hook up				7
right house	7
right hum ,	7
right hum but		8
right i G	17
right i ain't		17	-13	-13
right i already	-26	24	-18	-33		17
right i ask	-7		15
right i bet	7
right i blow	7
right i bring	-22		28
right i buy	-28		-10	-18	34
right i can	14
right i can't	15
right i check		7
right i come	31	-12
right i could	5
right i count			22	-6
right i cut	35
right i cut out		-11	17
right i didn't	21			-5
right i dig	12			-5
right i do	31
right i don't		28		-18
right i fill	12
right i finally	11
right i find	10
right i give	-5	-14		-11		22
right i glue	-11			17
right i go	28
right i gotta		10		-9
right i grind	13
right i hang	21
right i have		-12	28
right i haven't	-21	14		9
right i know	14
right i lay	27			-8
right i leave	-15	-19	32
right i look		11
right i need	-10	31
right i never	-18		26
right i no	15
right i only	28	-33	-7
right i open				5
right i order		-21	-10	-20	21
right i pour	15
right i push	7
right i run	24
right i sand	5
right i say	24
right i scrape	27			-11
right i screw	8
right i send		-6				19
right i shut	-9		18
right i start	4
right i stick		-14	14	-8
right i still	-8	18		-20
right i swap				11
right i swear	20	-10
right i take		-11	8
right i tape	20
right i turn	9
right i use	-10	-10		37
right i want	-11	11	-6	5
right i will	32	-19
right i'd	13
right i'll		9
right i'll be	14	-5
right i'll bring	22
right i'll do	31	-23
right i'll get	-27	12		13
right i'll look	-19	23
right i'm Q	22
right i'm gonna	20	-9
right i'm not	16
right i'm out	-6	12
right i'm stick	6
right i've			15
right i've get	-18		36
right i've leave	13
right if it's	20			-17
right if they		6
right in #	-16	12		5
right in ,	-48	-15		89
right in .	-17	-4		51
right in Q	45	-19
right in T	23		-6	-15
right in a				7
right in about	9
right in all				17
right in and				33
right in at	-17			29
right in bedroom	18
right in before	23
right in behind	17			-4
right in between				8
right in both	23			-16
right in but				11
right in each	34		-11	-22
right in for			7
right in from	-27	-14	-7	32
right in front		5
right in garage			9	-8
right in hall	24
right in his			9	-6
right in i	8
right in it				6
right in it's	26
right in kitchen	9
right in living room	11
right in my	-12		31
right in on	4	-13	-17	9
right in salon	12
right in so	-21			31
right in that	24
right in the			9
right in the kids	27		-11	-18
right in there				20
right in this	14
right in under	12
right in van	-35	-4	50	-18
right in with	-28			37
right inside .	20
right inside the	-14	20
right install				7
right into		-14		31
right into the	-5	-24	-17	29
right is N	21
right is Q	8
right is T	31
right is all	28
right is at		-7	6
right is back	19
right is bad	31			-16
right is beautiful	13
right is bend	9
right is black	20
right is break				-5
right is chip	6
right is come	-10		17
right is crack	21
right is cut	23
right is dead	16
right is do		7
right is drip	22	-13
right is dry	11
right is empty	-30	15	-10	18
right is fine	13
right is finish			-7
right is for	26
right is frame	17
right is full	17
right is go		-5		17
right is gonna	-6	15	-7
right is good	24
right is here	-10		23	-8
right is in			5
right is inside				11
right is it	11
right is leak	13
right is leave	-23		18	16
right is mush	8
right is no	6
right is not straight	6
right is off	18
right is ok	6
right is only	10
right is open	7
right is out	16
right is painted shut	6
right is plug	21
right is plumb	20			-5
right is put	-10			21
right is ready	20
right is rip	23
right is run	8
right is rust	9
right is short	19
right is sit	17
right is soft	16
right is solid	16
right is split	21
right is still	6
right is strip	11
right is tear	7
right is the	26
right is the wrong	-22		28
right is there	13
right is to	9
right is toast	5
right is too		-9		16
right is too short	14
right is twist	7
right is under	-10		19
right is wavy	7
right is wet	5
right is what	-13			12
right is wrong	11
right is yellow	10
right it #	-5		19
right it ,	20
right it Q	5
right it T	15
right it back	13
right it before	6
right it but	19
right it come	17
right it down	7
right it for	13
right it from	5
right it go	-4		-7	18
right it have	15
right it in	5
right it is		11
right it must	-13	19
right it need				6
right it off	23
right it on	14
right it run	8
right it take	-12			32
right it the	22
right it up	26
right it when	-15			21
right it's a		6
right it's about	20
right it's all	18
right it's gotta	-7	-13	-5	20
right it's hang	27
right it's in	-4		18
right it's just	16			-6
right it's me	12
right it's not	-6					9
right it's off	17
right it's on	-17	-13	33	-20
right it's the	9
right it's tight	7
right jam	17
right just sit	8
right keep				4
right kill	8
right land Q	18
right lay	-7			22
right leak ,				7
right leak at	21
right leaning	-6	-11	14	-23		19
right leave			51
right leave 
	-10		33
right leave #	-49		67
right leave ,	4
right leave .			32
right leave :	22		-6
right leave Q	-25		18
right leave and			8
right leave by	11			-14
right leave for	24		-19
right leave from	-9		17
right leave in	-37		43
right leave is	-10		-25	22
right leave it			-8	7
right leave of			12
right leave on			6	-20
right leave over	-14		60
right leave side	28		-6
right leave so	-24		38
right leave the	-14		19
right level	-14			21
right lift	4
right like Q	13
right like the		12
right line	12
right look	19
right loose at	23		-22
right lose		14
right low		8
right lower	7
right make	24	-8
right make it	32	-29
right mark	10
right match	-6			7
right me	14
right me Q	12
right measure Q	21
right miss		5
right miss 
		9
right miss ,	-21	41
right miss .	39	-9		-7
right miss Q	18
right miss a	19
right miss at	27
right miss behind	17
right miss by	-13	25
right miss from		8
right miss in		18	-15	-31
right miss on	33	-14		-15
right miss strike	4
right mitre	6
right more	-9	29
right more #	-35	42
right more .	-25	30
right more and	-41	46
right more in	-39	-16	41	-5
right more on	19	-49	-25	-14	34
right more to	41	-22	-13	-28
right mount				12
right my	25
right near	22
right near the	17
right nearly	13	-7	-6
right need ,	-48	57	-22	-20
right need .	-34	47	-15	-23
right need G	24	-19
right need Q	24	-6
right need T	15
right need a	26	-6
right need another	-15		18
right need redo	15
right need to	22
right never get	24
right new	-32	11		9
right new ones	-19	24	-13	-9
right next		22
right next .	-6	14
right next time	-24	29
right next to	13			-10
right no	10
right no .	-53	32		32
right no G	-38	32	-9
right no Q	29	-15		-21
right no charge	-44	18	13	19
right no close	9
right no have	20
right no i	32	-35	18	-19
right no need		8		-10
right no not	-12	15
right no sorry	22	-17
right no the	-9	21
right no wait	8
right no what	17	15		-23
right not G	-45	48
right not a		14
right not before	22
right not cut	23
right not on	-18	30
right not start	6
right not to	9
right notch	24
right nothing	12
right now 
	17
right now #	14
right now ,	30	-5
right now .	34
right now G	18
right now Q	-5			13
right now and		-15		-12	19
right now i	23
right now is	-20			35
right now it	-8	-5		24
right now it's	8
right now she	-15	-7		21
right now the	17
right number	19			-11
right of '	-6	-13	-22	-32	24
right of Q	-25
right of a	20
right of em	-23		11
right of it			11
right of my	12
right of that		9
right of them				11
right of those	-5	33	-12	-29
right off	13
right off #	8
right off T	10
right off a	14
right off about	7
right off by	22
right off for	26		-7
right off in	11
right off it	24
right off to	16			-4
right oh		16
right oh and		28
right ok 
	22
right ok ,	14
right ok .			12
right on #	33
right on ,	-15			43
right on .	-12	-10		58
right on G	-15	-24	34
right on N	17
right on Q	23
right on a	40	-15
right on all				10
right on and				25
right on backwards	9
right on both	21			-10
right on by	20
right on ceiling	17			-6
right on em	25
right on every	29			-20
right on everything	20
right on hand	-24	-32	52	-35
right on her	27	-24	-13
right on hold	17			-6
right on i				9
right on in	26
right on its	25
right on me	-29	37
right on my				-9
right on order	-66	7		-6	67
right on site	-23	-19	52	-38
right on so				17
right on the wrong	21			-8
right on them		5
right on there	-33			36
right on this	34			-10
right on till	14
right on top	5
right on truck	15		-7	-7
right on your	-10	21
right once	21	-12
right only	22
right only Q	9
right onto	-8			16
right open ,				6
right open Q	5
right or	26
right or a	19	-11
right or better	-9	11
right or the	12
right order	-6			-6	24
right order ,	-33			-9	37
right out #	13
right out ,	35			-9
right out .	17
right out Q	21
right out and	16
right out at	10
right out back	5
right out before	15
right out from	7
right out front	6
right out here	25	-7
right out in				12
right out of	-4	-9		36
right out so	16		-6
right out the	29
right out to	12
right over ,	-44	-30	33	-36		24
right over Q	34
right over T	17
right over by	-17	21
right over it				4
right over on	24	-9		-18
right over there	22			-15
right over to	18			-12
right pack		20		-13
right pack ,	4
right past	13
right patch	25
right pay	27
right peel		11
right perish	-22	13		12
right pick	22	-15
right pipe	19			-12
right pitch	-7			16
right place	11
right place ,	6
right please	-32	40	-10	-14
right plug	18
right plug solid	14
right plug with	13
right plumb	27			-15
right plus	-26	12	-12	17
right plus Q	-33		7		13
right plus the	-18	-20	-8	29
right point	22
right pop	10
right prime		9
right promise				-8	16
right pull ,	5
right pull Q	13
right pull and	18		-7	-19
right pull it	23			-18
right pull out	28
right pull the	-22	14	21	-31
right put	28
right quit	11
right rack	5
right raise	23			-8
right rate	-4			15
right read	17
right read Q	9
right rehang	6
right repair	16			-9
right replace	-6			22
right require		9	-14	-8
right return	-14					29
right right	19
right right down	8
right right through	11			-7
right right where	21	-4
right rip			5
right rock	11
right roll	-30	15	13
right rot at	-15	18
right rough		5
right rough in		11		-10
right rub	9
right run .	-20		29
right run but	4
right rusted through	19
right sag ,	17
right sand		-9	12
right say Q	15
right say the	9
right scrape	13
right scratch						11
right screw	-5			22
right scribe				13
right seal .	18
right seize	8
right seize ,	11
right set	9
right set and	21
right settle	19
right she have		-11		11
right she say	21
right she want	-9					17
right she'll	28		-16
right she's	15
right she's get	27
right shear	15			-8
right shim	15
right ship	-4				17
right short		26		-6
right short ,	33	-14	-13	-23
right short .	-48	57	-25	-21
right short at	32	-27	-10
right short on			-5	-13
right short so	8
right shot	-7	18
right shot so	13
right should		15
right should do	-27	32	-6	-11
right show Q	7
right show up	-11				14	14
right side	4
right since	8
right since T	9
right since the	-14			7
right sit at	6
right sit back	25	-5		-13
right sit in			25
right sit on		-5	11	-18
right size	23	-13
right skin			12	-6
right slam	5
right snap	25
right snap ,	11
right snap .	22
right snug	11
right so G	15		-5
right so N	7			-8
right so Q		-44
right so T	15
right so a	28
right so ask		13
right so bad	6
right so bring	-22	6	9
right so buy		10	-13
right so call	11
right so don't	29
right so either	32	-18		-12
right so far	-22			24
right so get	-25	12			6
right so have	16
right so he's	18
right so i'm	42
right so i've	31
right so if	15
right so is	23
right so it	34
right so it'll	7
right so it's	15
right so need			-7	21
right so nobody	20
right so nothing	-19	-20	30
right so order	27	-13
right so pick	7	-4
right so put	19
right so she	13
right so she's	14
right so somebody			8
right so swap	13
right so that'll	23	-15
right so that's	7
right so the	19
right so there's	22
right so they	34
right so they're	23
right so throw	6
right so we	26		-6
right so we're			12
right so you	13
right some	8
right somebody leave	25	-14
right sort	4
right sound	12
right sound hollow	11
right sound like	7
right space	16
right spare	-23	-6	38	-23
right spare .	-6	-11	19	-22
right spares	-43	-16	17	7
right split	28		-10
right spray	17
right square		15
right squeak	6
right stagger	25			-11
right stain		16		-21
right stain ,	14		-10	-25
right stand	11
right stand Q	-9			15
right start	15
right start T	10
right start at	16
right stay			13	-13
right stay on	15
right stick ,	-6			14
right stick on	-12			17
right stick out	4
right still			12
right still has		-5	5
right still in	-13	-11	36	-19
right still need	21
right still on	-6	-5	46	-39
right still soft	8
right still tacky	16
right still to		11	-6
right still want	21
right still won't	9
right stop	11
right strap	10
right stretch	10	-9
right strip so	22			-9
right stuff Q				5
right supply	9
right swap				22
right swap ,	-29			39
right swap .				8
right swap it	26			-13
right sweat	-8	18		-7
right swell				11
right swing	6
right take	7
right take Q	15
right take a	14
right take out	8
right take the	16
right tape	-14			15
right tear ,		9
right tear at	-6	12
right tell				4
right tell her	12
right tell him	-12	16
right tell the	26
right test	11
right test Q	14
right than	30
right than the	31		-19
right that G	11
right that N	7
right that and		7
right that are				-8		14
right that back	21	-9
right that be	7			-18	-14	28
right that before	11
right that come	17
right that go	-27	25	9
right that is	18		-8	-8
right that need		-9	17		-14
right that up	10
right that want	-27			34
right that'll	-7		17
right that'll do	-17		22
right that's Q	45			-12
right that's T		7
right that's a	11
right that's all	-8	19
right that's the	-9	-9		23
right the N	-16				18
right the Q	-18	22
right the back	7
right the big	18			-13
right the bottom	20			-5
right the box	35	-14		-16
right the closet	16			-5
right the edge	13
right the floor		-15		11
right the gap				11
right the guy	17
right the hinge		-15	14
right the hole	10
right the inspector		21		-8
right the last	14		-7
right the new		13	-17	-15
right the old				26
right the other	-8		15	-7
right the owner		9
right the painter		13		-15
right the plumber	12
right the rest	14
right the second	-19			23
right the shop	10
right the size	20
right the top	-8	15
right the wall	-13			16
right the white		-25	15	-6
right their	9
right them	16
right then	-10	12
right then Q	17
right then i	19
right then we		-6		13
right there #	21
right there ,	8
right there .		8
right there Q	-19	22
right there and	25
right there are	22
right there be	-19			23
right there is	17
right there so	20		-12
right there the	13
right there's				7
right there's no	-19	-7		26
right they go	-9		-6		20
right they have	32	-7		-5
right they leave	15			-20
right they say		15
right they send	-8	-6	31
right they ship				13
right they want	30
right they were	10	-12		-5
right they're		-4	6
right they're Q	12
right they've	-29	24	11	-6
right this time	21	-15
right thread	5			-5
right through .	20
right through Q	36	-11		-29
right through and	-8	-11	-6	19
right through it	33
right through the	-15			23
right throw	5
right tie	9
right til T	7
right till he	6
right till it's	5
right till the	14
right till then				12
right to G	32			-8
right to Q	7
right to a	19	-27	-25
right to back	14
right to be	-10	31		-5
right to buy	-15	38	-28	-24
right to center	27	-11
right to come	-7	14
right to do		-6	-12		19
right to get	-31	41	-18	-14
right to go	26	-9	10	-54
right to it	26
right to match	-5	12
right to put	-18	17
right to see	29	-21
right to spare	-8		16	-15
right to take	14
right to the yard	-24	-27		-23		37
right to wall	22			-8
right to you	8
right to your	10
right too	-11	7
right too #	-26	25		7
right too .	28
right too so	10	-6
right torque	31	-12		-24
right torque to	31	-12		-24
right touch	4	-6
right trim	-12			22
right trim out	-23			28
right turn out	13
right turn up		10
right under ,	9
right under G		13
right under Q	24
right under and	-7			15
right under it	22
right unopen	-28		39	-16
right until T	12
right up #	9
right up ,	-38	-16		67
right up .	-7		-8	27
right up Q		6
right up T	25	-8
right up all	10
right up and	30
right up at	36
right up but	-16			18
right up by	25
right up front	-29	-19		33
right up here	11
right up i	-11				19
right up it	22			-7
right up the	6
right up there	52	-16		-6
right up through	-20			23
right up top	8
right up with	-7			13
right us	17			-5
right use				43
right use ,	-14			51
right use .	-40			55
right use to	21			-9
right use up	30			-18
right wait	23
right walk off		10
right want Q	12
right want T				12
right want a	24
right want to		-13	11
right warp						13
right wash	7
right wasn't	22
right waterlog	10
right we get		-19	24	-11
right we go	24
right we have		8
right we need	29
right we put	12
right we set	15			-9
right we use	13			-17
right we'll	-10	10
right we're	-6	6
right weep	6
right weep at	19
right wet	6
right what a	5
right when i'm	11
right when it	7
right when it's	19
right when the	18
right when you	10
right when you're		13
right which i			9
right which is	11
right while	-17	13
right while i		-23			13
right while you're	-15	25			-8
right who	9
right whole	10
right will		13
right will be	8
right will do	-51	42	9	-40
right will not	20
right wipe	11
right wire			-13	12
right wire and	-7		-22	20
right with N	22			-11
right with Q			-11	32
right with a	11
right with it	31
right with me	-5	13
right with no	34
right with that	14
right without	13
right without a	13
right wobble ,	8
right won't catch	6
right won't come	10
right won't cover	6
right won't go	15
right won't sit	-16					23
right wore out	5
right work .				11
right worn	12
right worth	21	-14
right would	6
right would be	-9	14
right wouldn't	20
right wrap	14
right you	4
right you at	12	-4
right you can	23
right you can't	19
right your	12
right1 
		17
right1 !	19
right1 "	-19	-20	31	-34
right1 #.		5
right1 &	-5			12
right1 '	18
right1 (	-11
right1 +	-19
right1 /	-14		5
right1 ;			16
right1 =			8
right1 ?	36	-6
right1 @	-4
right1 G				16
right1 a	5
right1 about	4
right1 above	13
right1 across	17
right1 after	22
right1 along				10
right1 already	-11		20
right1 another	24
right1 any	8
right1 anyway	20
right1 aren't	15		-14
right1 around				13
right1 arrive			8
right1 ask	21
right1 back						15
right1 bag	-7	17
right1 bed	12
right1 below	11
right1 bend	15
right1 between	11
right1 block	8
right1 board	11
right1 bolt	14
right1 book	8
right1 both				22
right1 box	5
right1 break	9		-5
right1 break.		17
right1 bring				-14
right1 build	-5			17
right1 bust	33
right1 buy	13	6			-21
right1 buzz	12
right1 call	15
right1 cap	-6		8
right1 change				21
right1 check	7
right1 chew	10
right1 chip	11
right1 clean	4
right1 clip	-6	-7		14
right1 coat	-11			17
right1 complete	14
right1 core	-12	13
right1 cover	4
right1 crook	12
right1 crown	21
right1 cup		10
right1 cure		14		-7
right1 curl	12
right1 dead	31	-16
right1 delaminate	14
right1 deliver	-9	-9	19	-11
right1 dent	21
right1 die	10
right1 doesn't	8
right1 dont	-12	20		-7
right1 draw		9
right1 drip	25
right1 dry	14
right1 each		-5		10
right1 eat	11
right1 empty	10
right1 end	20
right1 every	5
right1 everybody	10
right1 extra	-28	8	18
right1 fail	16
right1 fill	21
right1 finally	-24	-5	19	16
right1 find	14
right1 fine	8
right1 fit	-14			34
right1 fix	-20			34
right1 flash		-7		12
right1 float	25	-8		-14
right1 flush	27
right1 frame	18
right1 full		-16	16	-20
right1 glaze	7
right1 glue	-10			33
right1 good	-10	-22	26		7
right1 grab		-17		5
right1 grout	12
right1 hang				10
right1 has	5
right1 hasn't		12
right1 have	4
right1 haven't	-12	10	8
right1 he'll	17
right1 he's	6
right1 head	-17	18
right1 her	14
right1 here			28
right1 him	11
right1 hollow	19
right1 hook				7
right1 house	7
right1 i'd	13
right1 i'll		9
right1 i've			15
right1 install				7
right1 into		-14		31
right1 jam	17
right1 keep				4
right1 kill	8
right1 lay	-7			22
right1 leaning	-6	-11	14	-23		19
right1 leave			51
right1 level	-14			21
right1 lift	4
right1 line	12
right1 look	19
right1 lose		14
right1 low		8
right1 lower	7
right1 make	24	-8
right1 mark	10
right1 match	-6			7
right1 me	14
right1 miss		5
right1 mitre	6
right1 more	-9	29
right1 mount				12
right1 my	25
right1 near	22
right1 nearly	13	-7	-6
right1 new	-32	11		9
right1 next		22
right1 no	10
right1 notch	24
right1 nothing	12
right1 number	19			-11
right1 off	13
right1 oh		16
right1 once	21	-12
right1 only	22
right1 onto	-8			16
right1 or	26
right1 order	-6			-6	24
right1 pack		20		-13
right1 past	13
right1 patch	25
right1 pay	27
right1 peel		11
right1 perish	-22	13		12
right1 pick	22	-15
right1 pipe	19			-12
right1 pitch	-7			16
right1 place	11
right1 please	-32	40	-10	-14
right1 plug	18
right1 plumb	27			-15
right1 plus	-26	12	-12	17
right1 point	22
right1 pop	10
right1 prime		9
right1 promise				-8	16
right1 put	28
right1 quit	11
right1 rack	5
right1 raise	23			-8
right1 rate	-4			15
right1 read	17
right1 rehang	6
right1 repair	16			-9
right1 replace	-6			22
right1 require		9	-14	-8
right1 return	-14					29
right1 right	19
right1 rip			5
right1 rock	11
right1 roll	-30	15	13
right1 rough		5
right1 rub	9
right1 rusted through	19
right1 sand		-9	12
right1 scrape	13
right1 scratch						11
right1 screw	-5			22
right1 scribe				13
right1 seize	8
right1 set	9
right1 settle	19
right1 she'll	28		-16
right1 she's	15
right1 shear	15			-8
right1 shim	15
right1 ship	-4				17
right1 short		26		-6
right1 shot	-7	18
right1 should		15
right1 side	4
right1 since	8
right1 size	23	-13
right1 skin			12	-6
right1 slam	5
right1 snap	25
right1 snug	11
right1 some	8
right1 sort	4
right1 sound	12
right1 space	16
right1 spare	-23	-6	38	-23
right1 spares	-43	-16	17	7
right1 split	28		-10
right1 spray	17
right1 square		15
right1 squeak	6
right1 stagger	25			-11
right1 stain		16		-21
right1 stand	11
right1 start	15
right1 stay			13	-13
right1 still			12
right1 stop	11
right1 strap	10
right1 stretch	10	-9
right1 supply	9
right1 swap				22
right1 sweat	-8	18		-7
right1 swell				11
right1 swing	6
right1 t area.		18
right1 t defect.	9
right1 t finish.	-18	20
right1 t fixture.	-5	-19		17
right1 t material.	-15	8		12
right1 t role.	-5	17		-7		7
right1 t surface.	17
right1 t tool.	23	-13
right1 take	7
right1 tape	-14			15
right1 tell				4
right1 test	11
right1 than	30
right1 that'll	-7		17
right1 their	9
right1 them	16
right1 then	-10	12
right1 there's				7
right1 they're		-4	6
right1 they've	-29	24	11	-6
right1 thread	5			-5
right1 throw	5
right1 tie	9
right1 too	-11	7
right1 torque	31	-12		-24
right1 touch	4	-6
right1 trim	-12			22
right1 unopen	-28		39	-16
right1 us	17			-5
right1 use				43
right1 v have.	4
right1 v return.	-12					28
right1 v see.	20
right1 v use.				43
right1 wait	23
right1 warp						13
right1 wash	7
right1 wasn't	22
right1 waterlog	10
right1 we'll	-10	10
right1 we're	-6	6
right1 weep	6
right1 wet	6
right1 while	-17	13
right1 who	9
right1 whole	10
right1 will		13
right1 wipe	11
right1 wire			-13	12
right1 without	13
right1 wore out	5
right1 worn	12
right1 worth	21	-14
right1 would	6
right1 wouldn't	20
right1 wrap	14
right1 you	4
right1 your	12
right2 !	25	-11
right2 &	-8			21
right2 '	-6	-13	-22	-32	24
right2 (				-9
right2 )	-10	16		-21
right2 *	5	-30	-22	27
right2 -		8
right2 22	19
right2 4	32
right2 :	32
right2 >				-5
right2 ?	23			-4
right2 @	-9		-14	14	5
right2 about	20
right2 above	8	-9
right2 abt				15
right2 add	-20		26
right2 adjust				14
right2 aff	6
right2 again	24
right2 against	6
right2 ain't		7		-12
right2 air	31
right2 almost	20			-7
right2 along	-5	16
right2 already	-21		19	-13
right2 another		-10
right2 any	7
right2 anything		12		-8
right2 anyway	13
right2 apart	19
right2 around	30	-23
right2 arrive	8
right2 ask		16
right2 attic		13
right2 b				10
right2 back wall	9
right2 backorder	-33	28			17
right2 backsplash	16
right2 backwards	12
right2 bad	6
right2 bag	6			-11
right2 balance	-8	-12	18
right2 bar					18
right2 bare	5
right2 basement	10
right2 bath	9	-29	15
right2 bathroom	28
right2 beautiful	15
right2 because	30	-15
right2 bedroom	10
right2 bedroom 1	11
right2 bedroom 2	25
right2 bedroom 4	6
right2 before	9
right2 behind	26
right2 below	-12			14
right2 bench	-26		16	16
right2 bend	23
right2 better		6
right2 big	-12	34		-7
right2 bind	9
right2 black			7	-12
right2 bled	18
right2 blow	11
right2 board	21
right2 bolt		-6	14
right2 book	15
right2 bore			10	-14
right2 borrow			15
right2 boss	-6	16
right2 bottom	5
right2 bowl	-11	17
right2 box	17	-8
right2 brace		-9		13
right2 bracket	-18			28
right2 brass	31	-25
right2 bring			15
right2 brown		14
right2 brush		4
right2 burn	-13			20
right2 bury	4
right2 bust	8			-14
right2 button	23			-13
right2 buy				-14
right2 c	24
right2 can't		16
right2 cap	13
right2 catch	5
right2 cause	42
right2 ceiling	14
right2 center	30
right2 change			-4
right2 charge	-32	9	9	14
right2 chase		21		-14
right2 cheap		17	-13	-24
right2 chew	15
right2 chewed up	5
right2 chip				-4		24
right2 chok	24			-9
right2 clamp	34
right2 clean	14
right2 clear	5
right2 client		-5	27	-16
right2 clip	20
right2 clog	12
right2 closet	36		-18
right2 coat		-13		10
right2 cold				9
right2 compact	21			-13
right2 complete	13
right2 confirm	-9	16
right2 cope	21			-8
right2 corner	35
right2 corridor	20
right2 count			22
right2 counter		20	-14	-19
right2 cover	-4
right2 crack	14
right2 crank	8
right2 crook	20
right2 crosse	16
right2 crown	-11		21	-17
right2 crush	16
right2 cup	-5			12
right2 customer	17
right2 damp	-13	19
right2 date	37	-13		-29
right2 day	15
right2 daylight	22	-17
right2 dead	8
right2 deep	-4	9	-11
right2 deliver	-18			-5		30
right2 didn't		-4				6
right2 dig	21
right2 ding	-5	17
right2 dining room		15	-8
right2 doesn't		-27		13
right2 dog	10
right2 don't		4
right2 double	-14	-11		21
right2 dragging	16
right2 drain				15
right2 drip	26
right2 driver	-34	-20		-26	20	24
right2 drop	9
right2 drywall		6
right2 due	-7	-6			36
right2 dump		-14		11
right2 dumpster	21
right2 each	46	-22		-12
right2 early		15
right2 eat	11
right2 edges	20			-15
right2 eighth	27		-11
right2 either	32	-14		-8
right2 electrical	22
right2 electrician		10
right2 em	-15	10
right2 empty	-17	7		10
right2 end	11
right2 ends	17
right2 enough	-28	13	18
right2 entry	20
right2 epoxy	22
right2 even	11
right2 ever	15
right2 every	9
right2 everybody	22
right2 everything		10
right2 everywhere	11
right2 except	26
right2 exhaust	9
right2 existing	26
right2 extra	-27	14	20	-25
right2 falling	10
right2 fasten				10
right2 feather	5
right2 figure	14		-11
right2 file	26
right2 fill	15
right2 finally	13
right2 fine	7
right2 fireplace	-7			14
right2 first	33	-15
right2 first coat	7
right2 fit	16
right2 fix	16
right2 flat	8
right2 flush			7	-13
right2 foam				4
right2 forget			23
right2 frame					16
right2 fre	9
right2 free	10
right2 fresh		-16		14
right2 front				13
right2 frost	14			-9
right2 full	27
right2 gap				9
right2 garage			6	-5
right2 gary	-12	-9		20
right2 gas	-17	8			18
right2 give		-22				11
right2 glue				6
right2 god	31	-8	-18
right2 gonna	6
right2 green				10
right2 grind	24
right2 grout		-6		15
right2 guy	17
right2 hair	5
right2 hairline	14
right2 half	25	-20		-15
right2 hall bath		-19		18
right2 hallway	32			-17
right2 hand		-18	37	-32
right2 hard	38			-24
right2 has	14
right2 haven't	-11	9
right2 he'd		7
right2 he'll	7	-10
right2 hearth	12
right2 heat	24
right2 heater	-12		17	-18
right2 heating	-7	-17		19
right2 hide	30
right2 high	4
right2 him	-11					16
right2 hinge			13	-11	6
right2 hit	19
right2 hold	14
right2 hole	33			-20
right2 holes	24
right2 hollow	27
right2 home	-33		42
right2 homeowner	8
right2 hook	28
right2 hot	20
right2 house	9
right2 how	5
right2 humidity	-12	-13		20
right2 i'd		-8
right2 if	15
right2 inch	-23	-19	-7			22
right2 inspector		21
right2 install	-30			26	11
right2 into				21
right2 invoice		-21	22	-18
right2 iron				9
right2 isn't	25
right2 its	11
right2 joint	-22	11	22	-14
right2 jump	10
right2 junk	21		-14	-8
right2 just	48			-17
right2 keep			7
right2 kick	10
right2 kill	7
right2 know	20
right2 l	-6	-9		19
right2 label	-9		22	-17
right2 ladder	-23	-22	15	20
right2 lag	-18			15
right2 land	-14				28
right2 landlord			8	-10
right2 lap	-6			14
right2 last				11
right2 latch	13			-15
right2 later	8
right2 laundry	-8	-8		17
right2 leaning			12
right2 leave			6
right2 led	5	5	-13	-8
right2 left out	-19	23	-7
right2 legs	13
right2 let go	5
right2 level	29
right2 lite	10
right2 live	9
right2 load	13
right2 longer	-14	22		-18
right2 lose	14
right2 lot	8
right2 low	24
right2 lower	16
right2 luis	12
right2 m		11
right2 main	24
right2 maple	6			-6
right2 mark	18			-9
right2 mat	21
right2 match		12		-11
right2 matter	8
right2 maybe	23		-21
right2 me	8
right2 melt	14
right2 mill	30
right2 mine		5		-19
right2 miss	19			-6
right2 mix	30	-15	-14	-16
right2 moisture	-5			13
right2 mortar		-9	-15	7
right2 most	34	-17		-26
right2 mount	-19			36
right2 move	19
right2 mrs	8	-8
right2 mud	40	-23
right2 mush	-17		-10	22
right2 must			7
right2 my			20
right2 n	23
right2 nail				7
right2 near	24	-14
right2 nearly	17
right2 never	-9		10
right2 next		19
right2 niche	17	5		-24
right2 nick	24
right2 night	14
right2 no	9
right2 nobody	12
right2 nobody's	11
right2 none	-17	-9	-17	7	-8	22
right2 noon	27
right2 not straight	6
right2 not touching	4
right2 notch	29
right2 notice	10
right2 now				20
right2 nowhere	17
right2 number		-16	10
right2 oak			7	-14
right2 off	16
right2 office	-6	17		-7
right2 oh	8
right2 oil	33
right2 ok	13
right2 okay	14
right2 old				8
right2 once	19
right2 one's	-7	-24		9
right2 ones	-28	12	22	-38	11
right2 only	29	-16
right2 open	14	-6
right2 opened up	18
right2 orange	19
right2 order					49
right2 oscar	24	-13
right2 other			18	-10
right2 otherwise	17
right2 our				9
right2 ours	28	-13
right2 out of level	5
right2 out of plumb	10
right2 outside	9
right2 over			28
right2 painted over	19
right2 painted shut	5
right2 painter	5	8		-19
right2 pantry	33		-6
right2 part	13	-8
right2 pass	19
right2 past	24			-10
right2 patch	12
right2 pay	-32	-15	30	-19	18
right2 peel	6
right2 pick	-22	18	11
right2 piece	-7			20
right2 pieces		6	-20	11
right2 pin	10
right2 pipe	-5	5
right2 pit	23	-11
right2 pitch	15	-17
right2 place	6
right2 plane	10
right2 plaster				10
right2 plate		-29		30
right2 please		13		-5
right2 plenty	-38	27	23
right2 plumb	-9			25
right2 plumber	5
right2 plumber's	13
right2 plus	-28	34	-8
right2 point	14
right2 polish		-14	-9	15
right2 pop	14
right2 porch	-21	10		10
right2 pour	20
right2 powder	33	-17		-12
right2 powder room	-20	27
right2 prime				10
right2 prob	5
right2 pull	8
right2 pump	28
right2 punky	6
right2 purge		-8
right2 push	5
right2 putty				6
right2 quiet		-11		18
right2 quit	6
right2 quote		10
right2 r	24			-13
right2 rack	12
right2 rain	14	-9
right2 rake	26
right2 rate	16
right2 raw	10
right2 reach	4
right2 ready		8
right2 real	23
right2 really	16
right2 rear	13
right2 rebuild	15
right2 receipt			13
right2 recheck	-15		-9	21
right2 recoat	21
right2 recut	12
right2 red	4			-8
right2 redo	25
right2 reglue	20			-6
right2 reorder	18
right2 replace	-12			31
right2 replacement	5
right2 reserve	19	-18
right2 reset	23
right2 rest	16		-5
right2 restroom	6
right2 return	19			-10
right2 reverse	6
right2 ridge	25			-7
right2 right	9
right2 ring		12
right2 rinse	12
right2 rise	-22	-8		21
right2 rm	9
right2 rocking	8
right2 rocks	18
right2 rod	32	-14		-14
right2 roll				9
right2 rot	28			-5
right2 rotten	-15			19
right2 rough			11
right2 roughly	11
right2 round	7
right2 row	5
right2 rub	16
right2 run	36
right2 rusted through	6
right2 s	-6			9
right2 salon	14
right2 same	-24	11		8
right2 save	19
right2 saw	-9	17
right2 say	23
right2 scrap				7
right2 scrape	6
right2 scratch	31	-9
right2 screen	18
right2 screw	8	-18
right2 seam		-8	13	-7
right2 seams	-12			26
right2 second	-8			20
right2 seize	21	-5
right2 shave	11
right2 she'd	-19	23		-12
right2 she'll	17
right2 she's		-18		9
right2 shim	10
right2 ship	7	-22	-28		17
right2 shot	27
right2 should	5
right2 show						7
right2 side				21
right2 sign	4	9		-18
right2 silicone				8
right2 site	-23	-19	52	-38
right2 size	-6	8
right2 skim	-16	19
right2 skirt	4
right2 slab	20
right2 sleep	12
right2 slip	10
right2 slope				12
right2 slow	10
right2 smell	15
right2 smooth		12		-18
right2 snake		13
right2 snap	14
right2 snug	5
right2 so	13
right2 soft	9
right2 solid				10
right2 some	7
right2 something	6
right2 soon	13
right2 sorry	21	-6
right2 spare		-27
right2 sparky	9
right2 spec	5
right2 spin	23			-9
right2 spins	20
right2 split				6
right2 spongy	24
right2 spot	-7	12
right2 spray	24
right2 square	30			-19
right2 stack			9
right2 stain	21
right2 stair	27			-10
right2 stairs	11
right2 stairwell	17	-7
right2 stand	19
right2 stay				-9
right2 steam	16
right2 step	-8	12
right2 steps	20
right2 stick	5
right2 stiff	-17			18
right2 stock	-20	-21	5	10
right2 stop	6
right2 straight	-7			20
right2 straighten	19
right2 strap	-9	-11		22
right2 strike	21
right2 strong	10
right2 study	10
right2 stuff		-7		15
right2 suit	24			-6
right2 sunroom	13
right2 super	-11	30		-25
right2 supplier		10
right2 supposed					17
right2 sure	-17	21
right2 sweat	7
right2 sweep	4
right2 swell	10
right2 swing	-8			18
right2 t tool.			16
right2 tacky	18
right2 tag	12
right2 talk				11
right2 tall	9
right2 tank	15
right2 tape				4
right2 tear	12
right2 template	-12	-10		15	6
right2 tenant			11	-14
right2 test				6
right2 text	11
right2 than	31	-22		-27
right2 thank				9
right2 that'll	5	-17			8
right2 the kid	5
right2 the kids	35	-14	-9	-16
right2 the lady	-25		10	9
right2 the lady's	5	-21		14
right2 the wrong			23	-11
right2 the yard	-15	-32		-19		34
right2 their	5
right2 there				4
right2 there's				17
right2 they'll	5
right2 they've		5
right2 thing		-13			7
right2 third	6	14		-27
right2 this	12
right2 those		8
right2 though	7
right2 throw	23
right2 tie	-13	19
right2 tighten	5
right2 til	6
right2 tile			6
right2 to	12
right2 toast		5
right2 toe	11
right2 together		-13	-9	-20	20
right2 too long	-21	24
right2 too short	30
right2 too tight	6
right2 torque	-6			16
right2 total	37	-32
right2 touch up	23		-16	-9
right2 trace	15
right2 trip				12
right2 truck		-12	16	-14
right2 tube	4
right2 tuck	-17			24
right2 twist	8
right2 under		-8
right2 underneath	14
right2 until	4
right2 upside down	21
right2 upstairs	21
right2 us	17
right2 use				10
right2 v buy.					22
right2 v return.	19			-6
right2 v use.				10
right2 van	-36		52	-12
right2 vent				5
right2 w	30	-19		-16
right2 walk	-11	15
right2 wall's	15
right2 walls	19
right2 warm		15		-4
right2 warp	9
right2 waste	28
right2 water	28
right2 wavy	10
right2 wax		11
right2 way	26			-5
right2 we'll	5
right2 we've				5
right2 weak	19
right2 weigh	10
right2 well	-8	15
right2 were		-8		-10		8
right2 wet	20
right2 what	9
right2 what's		-20		8
right2 where	8
right2 while	-30	4		22
right2 white	-32	31
right2 who	16
right2 whoever's	27	-16
right2 whole	32		-10
right2 why	27			-16
right2 wide	29
right2 will	14
right2 without	19
right2 won't	21
right2 work	-7		17
right2 worse	4
right2 would	-17	22
right2 wouldn't	-20	-5	10	18
right2 wrap			5
right2 wrong	4
right2 x		12		-7
right2 yellow	26			-5
right2 yet	12
right2 you're	-14	29
right2 zip	19
right2 zone	36			-17
right2 ~	23	-20
right2 •	12	-5
right2 ✓	9
right3 !	13
right3 &	15
right3 '	10
right3 (	8	-5	5	-5
right3 +				5
right3 /	23
right3 1	11
right3 2	-20	-15		28
right3 =	17
right3 ?	28
right3 @	22
right3 [		9
right3 above	7
right3 across	25
right3 add	6	-12
right3 adjust	31			-25
right3 again	5
right3 ain't	10
right3 air		5
right3 almost		-17		14
right3 alone	11
right3 along	25
right3 already		-19		8
right3 also	-48	50	-10	8
right3 am	23			-22
right3 anchor	-7			16
right3 another			16
right3 any	-31	20	16
right3 anything		10
right3 anyway	7
right3 apart			18	-11
right3 around				11
right3 arrive		-8	-9		14
right3 as	4
right3 ask	14
right3 away	33	-22
right3 b	-18	23
right3 back bedroom	9
right3 back wall	30	-27	-24	12
right3 backsplash	4
right3 backwards	4
right3 bad	21
right3 bag	-31		26
right3 balance	24			-20
right3 bar				16
right3 bare	23
right3 barn			-27	-9	23
right3 basement			10
right3 batch	13
right3 bathroom	-4			15
right3 bay	12	-8		-16
right3 bead	-19	-19	-11	38
right3 because		9
right3 bed	14
right3 bedrooms	29
right3 before	11
right3 believe	-5		13	-12
right3 below				7
right3 bench			9
right3 better	25	-21
right3 between				4
right3 big	6
right3 bin	-29		34	-15
right3 bite	10
right3 bled	11
right3 blue	21
right3 board	7
right3 boards		-14		16
right3 bolt	-8		-12	31
right3 bone		4
right3 book		8
right3 borrow	18	-9
right3 bottom's	21			-5
right3 bow	15		-10	-21		17
right3 bowl	18
right3 box	-31		21
right3 brace	-5	13	9	-16
right3 brake		-8	-13	15
right3 brass	-6	25
right3 break	-14		23
right3 bridge	12
right3 brush	6
right3 bug	6
right3 build	6
right3 bump	10
right3 burn	25
right3 bust	-16			19
right3 butter				13
right3 button	-10			18
right3 buy		11
right3 buzz	24			-7
right3 call				-4
right3 came off		-5	13
right3 can't				13
right3 carpenter		10
right3 carry	-24	19	-13	-11		24
right3 caulk		-14	15	-11
right3 cause		4
right3 ceiling		-8	-8	12
right3 cellar			6
right3 center	14
right3 centres	16
right3 change	8	-8
right3 charge	23
right3 chase	4
right3 check	16
right3 church	9
right3 circuit	-7	-18	-8	21
right3 clamp	-16	19		5
right3 clear	13
right3 client	21	-7
right3 clinic	18
right3 clip	-9	10
right3 close	25
right3 closet	15
right3 coat	7
right3 code	10	-21		9
right3 cold				7
right3 common	17
right3 complete		-17	-10	12
right3 core				12
right3 corners	-14	-20		10		10
right3 corridor	-9	-5		17
right3 couldn't	9
right3 count	-13	-24	18	6
right3 counter		-20				13
right3 crawl	26			-11
right3 crook	27
right3 crown	26
right3 crush	5
right3 cup			9
right3 cure				10
right3 customer	7
right3 cut	30
right3 cut out	28
right3 dab		-32	-21	23
right3 day	11
right3 daylight	-4				12
right3 dead	37			-6
right3 decide		15		-17
right3 deck	8
right3 deep				4
right3 deli				14
right3 deliver	-29	8	24
right3 den	43
right3 dent	-5	-10	20	-5
right3 dial	20
right3 didn't		-14			19
right3 different	29
right3 dig	4
right3 ding	15
right3 doesn't	12
right3 dog	15
right3 dont				5
right3 double	-34	10		12
right3 down	28
right3 drag	10
right3 drain				8
right3 drain line	18
right3 drill		-10		13
right3 drip				7
right3 drive	18
right3 driver	24
right3 driveway			7
right3 dry				6
right3 drywall	13
right3 duct	11
right3 due	33	-7		-12	-6
right3 dump	4
right3 dumpster				-25
right3 dust	18
right3 each				14
right3 earth	7
right3 east side		-13	-11	18
right3 eat	20
right3 eave	17
right3 edge	8
right3 edges				5
right3 either	10
right3 electrician	24
right3 else		14		-18
right3 empty	18
right3 ends		5
right3 engineer	26	-4		-13
right3 enough	-20		43
right3 ever	18
right3 except	17
right3 extension	18
right3 exterior	19
right3 extra	-18	20		-23	10
right3 face	10	-6
right3 factory	23	-6
right3 fall	-8			16
right3 family	-16	21
right3 family room				9
right3 far				14
right3 far end	13
right3 feed	24
right3 feel	19
right3 figure				12
right3 finally	19
right3 finger	14
right3 finish		10
right3 fire				9
right3 first			11
right3 first coat	25
right3 fish	9
right3 fit	16			-16
right3 fix	44	-10		-6
right3 flash	-9			15
right3 flip	18
right3 float	9
right3 flood	21
right3 flood test	13
right3 floor	9
right3 floor's	14
right3 foam	-5			22
right3 foil	-19		15
right3 foot	17
right3 forget	-38	30
right3 fourth	36			-19
right3 frame		7
right3 fre	21			-4
right3 freeze	24		-10
right3 front	6
right3 front room	12
right3 frost	6
right3 gable	19
right3 gallon	-41	22		28
right3 gap				15
right3 gas	-18	9		8
right3 give						9
right3 god				7
right3 gonna	15
right3 gotta	30
right3 grab	7
right3 gray	26
right3 green	16
right3 grind	-6	12
right3 guest room	27	-21		-13
right3 gym	-5		16	-10
right3 h	12
right3 half	-4		18
right3 hall	33	-9
right3 hall bath	20
right3 hall closet	32			-16
right3 hall's	13
right3 hallway	22
right3 hand			20	-8
right3 hang	22
right3 happy	17
right3 hard	6
right3 hasn't				7
right3 haul				8
right3 haven't	-9			14
right3 he	27
right3 he'll	18
right3 he's	24
right3 hear	7
right3 hearth	26			-7
right3 heat	8
right3 heater	-13	15
right3 heavy	-22	25
right3 height	19
right3 here					8
right3 higher	4
right3 him		10		-5
right3 hinge	20
right3 his	-9	19
right3 hole	13
right3 hole's		5
right3 holidays	-6			15
right3 hollow	11
right3 home			6
right3 homeowner	23	-8
right3 hot	21			-11
right3 hot side	-6			13
right3 house					6
right3 how				10
right3 hum	29	-21
right3 i'd	13		-14
right3 i'll	20
right3 in			12
right3 inside	23
right3 inspector	-12			5
right3 inspector's	11
right3 install	37				-12
right3 instead		9
right3 island	-31	13		12
right3 it'll	17
right3 jam	6
right3 job	-6	9
right3 just	30	-20
right3 keep	-9	5	12	-7
right3 kick	12
right3 kids		7
right3 kind	-29	30		-10
right3 kink	-5			13
right3 kit		-9		7
right3 kitchen	22
right3 knock	27
right3 knot	34	-10	-17	-8
right3 know		6
right3 l	-8			16
right3 label	31	-10	-11
right3 ladder		-22		16
right3 lads	5
right3 lady	10
right3 lag	40			-30
right3 land	35
right3 latch	25
right3 late	-13				20
right3 later	6
right3 laugh	25			-16
right3 laundry	7			-5
right3 lay	9
right3 layer	28			-23
right3 leak				10
right3 leaning	15				-10
right3 leave				8
right3 left hand	-30	6	11			15
right3 leg	15
right3 legs	22			-8
right3 let	5
right3 level				13
right3 lid	-29	21		15
right3 like	6
right3 linen closet	-6
right3 lip	-6			12
right3 list	-10	35	-9	-32
right3 little	-15
right3 load	11
right3 lock	18		-10
right3 loft		-13	12	-18
right3 long	-16	37
right3 long wall	18
right3 look	10
right3 loop	10
right3 loose	9
right3 lot	-18	-13	18	-13		19
right3 lounge	-11			16
right3 lovely	18
right3 low			-4
right3 low spot	11
right3 lower	32			-7
right3 lunch	25			-10
right3 main	17
right3 make	27	-9
right3 maple	-27	28
right3 mark	21		-6
right3 master	23			-6
right3 match	16
right3 max	7
right3 may	21		-7
right3 maybe			-5
right3 me	-8
right3 measure	19
right3 meet	16	-10
right3 mess	-5		15
right3 mgr	-12		7
right3 mid	6
right3 middle	14
right3 mill	26				-17
right3 mind	12
right3 mine	-8					19
right3 miter			16	-10
right3 mix	9	15	-21	-19
right3 moisture meter	4
right3 mop	36	-21		-23
right3 more	-9	-9	15	11
right3 morning	20			-15
right3 mount	-9			12
right3 mouse	6
right3 much				9
right3 mud		7	-16
right3 mudroom	10
right3 my	-10		13
right3 n	15
right3 nail			9
right3 neighbor	5
right3 next	-15	12			15
right3 nice	-11	15
right3 niche		11
right3 none	-6	9	10	-24
right3 noon			8
right3 north	27
right3 now				19
right3 number				5
right3 oak					6
right3 off	36
right3 office	-4		21
right3 oh		5
right3 ok	6
right3 okay	12
right3 once	23
right3 one's	17		-9
right3 ones	-27		16
right3 only	10
right3 opened up	-6	18		-8
right3 opening's	-8			7	9
right3 order					13
right3 other	11
right3 ought	19				-6
right3 out of square	19
right3 outside	25	-8
right3 outta	31	-22
right3 over	7
right3 overhang	15
right3 owe	-8			6
right3 own	19	-14
right3 owner		18
right3 pack	22
right3 paint	27
right3 painter	8
right3 pantry			24	-23
right3 paper	32			-24
right3 part	15
right3 parts	-23	-22		13	22
right3 party wall	11
right3 pass	15
right3 past	12
right3 patio	13
right3 peel	17
right3 per	-21	18	4	-9
right3 phone	5
right3 pick	-7					10
right3 piece	27
right3 pieces	18
right3 pinch	11
right3 pipe	7			-14
right3 place	17
right3 plain		12
right3 plan				5
right3 plane	10
right3 plant	-17	24		-21
right3 plaster	-6			18
right3 plate		-8		14
right3 plate's	19
right3 please				-15
right3 plenty	-26	-22	42	-19
right3 plug		10
right3 plumb	12
right3 plus	-36	28		8
right3 pocket	-18		11	8
right3 point	22
right3 pool	6
right3 pop		7
right3 porch	44			-7
right3 pour	13
right3 powder	-11			16
right3 powder room	-20		17
right3 pressure	13
right3 pressure's		-11	-4	18
right3 pretty	-7			15
right3 prime		10
right3 problem	13
right3 promise	19	-7
right3 proud	14
right3 proud of	20			-13
right3 pump	14
right3 push	22
right3 putty	25			-21
right3 quiet	-35	-8		38
right3 quote	15
right3 rack			17	-11
right3 rain	4
right3 rains	27	-20
right3 rake	-9	17
right3 rang	4
right3 rate	9
right3 rather	15
right3 ray	39	-8	-5	-25
right3 read	23
right3 ready	24
right3 real	9
right3 rebuild	11
right3 reckon			15
right3 recut	14
right3 red	-12		21
right3 reglue	26	-12		-4
right3 rehang	23	-15
right3 repair	22
right3 replace	-41	11		34
right3 rest	5		-40	11
right3 return			16
right3 rh		-13	-6	12
right3 ridge	12	5	-32	-12
right3 right				8
right3 ring	15
right3 rings	19
right3 rise		-10		15
right3 rm	28
right3 road	26	-13	-19	-4
right3 rocks	25			-16
right3 rod	32			-13
right3 roll		-19	13
right3 room	-9	4
right3 rot	21	5	-12	-25
right3 rotten	25
right3 round	17
right3 row	26	-22
right3 rubber	-15	-6	-13	24
right3 rust	6
right3 s	-33	-21		34
right3 safe	-38	38		-4
right3 sag	8	-5
right3 sala	8
right3 same	-19	23	9	-8
right3 scrap	26
right3 scratch	27	-9
right3 screed	13
right3 screw				10
right3 seal	26
right3 seam	29
right3 seams	17
right3 seat	-5		16
right3 second			4
right3 second coat	6		-8
right3 second floor		-8		13
right3 send	13
right3 shave	17
right3 she's	42			-20
right3 shed				-7
right3 sheet				8
right3 shift	16
right3 shingle	15
right3 ship	27
right3 shop	-12		14
right3 short	-16	5
right3 should		-13	4		5
right3 show	9
right3 shut	6
right3 shy	-14	-12	15	4
right3 side	15
right3 sign	4
right3 silicone	-8	5
right3 site	-6	16
right3 size	-5	18
right3 skim	10
right3 skin	10
right3 skirt				-12	17
right3 slab's	22
right3 slit	4
right3 slope	24			-15
right3 small	20		-10	-8
right3 smell	16
right3 smooth	20
right3 snap	-38	20		25
right3 snug				12
right3 so	8
right3 soft close		7		-8
right3 solid	-10			32
right3 somebody's				-5
right3 someone	18			-7
right3 somewhere	8
right3 sorry	15
right3 sort				11
right3 south	14
right3 south wall	7
right3 space	12
right3 spare	-64	-8	15	52
right3 sparky	14
right3 spec	25
right3 splash	16
right3 splice	-17			21
right3 split	21	-7
right3 spray	29			-13
right3 squeak	-30	21		13	-14
right3 stack			34	-23
right3 stain	30			-5
right3 stair			-7
right3 stairs	13
right3 stairwell					16
right3 stand	-4			13
right3 staple				9
right3 start	27
right3 stay	-27			24
right3 stays on				7
right3 steps	25
right3 stick	26
right3 sticker	25
right3 still	-9			52
right3 stock	-9		32	-8
right3 store		-7	13	-10
right3 straight				19
right3 straighten	20
right3 street	17
right3 strike		17
right3 strip	-4	-22		30
right3 stub	18
right3 study			17
right3 stuff	-15	16
right3 style		19
right3 sun	-17		-6	22
right3 sunroom	-9	12	-8	5
right3 supplier		15
right3 supply	24
right3 supply house	-52		-36	-39	22	35
right3 supposed	22
right3 swap	9
right3 sweep		17
right3 sweet	23
right3 swing	-7					12
right3 tacky	-16	-12	22	-5
right3 take						14
right3 talk	12
right3 tall	-9		15
right3 tank	26
right3 tap	13
right3 tear	11			-7
right3 temper	6
right3 template	6
right3 tenant	25
right3 test	-4			16
right3 thanks	26	-22
right3 that'll			17	-8
right3 the city	-19	28
right3 the kids	7	-10
right3 the lab	5
right3 the wrong	-34	-9	24	-16	-6	31
right3 the yard	-8	7			9
right3 them				-14
right3 there's	5
right3 thermometer	5
right3 they						5
right3 they'll		8
right3 thick	17			-7
right3 think		8
right3 third	6
right3 this				5
right3 those			12	-20
right3 though		10
right3 thread	5
right3 throw				-18	17
right3 thump	13
right3 tie	19
right3 tight	48			-6
right3 til	17
right3 tile	35
right3 time	31			-17
right3 tin		-6	14	-12
right3 tip	14	-15	-8
right3 together	-5	-16		18
right3 too						4
right3 too far	6
right3 too high	11
right3 too long	11
right3 too short	15
right3 top plate	12
right3 total	33			-23
right3 touch	22
right3 trailer	-34	-19	44	-25
right3 treat		17		-9
right3 trench		-9			20
right3 trip	22
right3 truck	-31		31	6
right3 tube		12		-12
right3 turn	31
right3 twice			16	-29
right3 under	6
right3 unit				8
right3 upper	14
right3 upstairs hall	7		-17
right3 use				-6
right3 utility				11
right3 utility room	-13	18
right3 v	5
right3 vacuum	-17			-11	19
right3 van	-33	-6	71	-40
right3 vent		8
right3 very	25	-4
right3 walk	-5			5
right3 wall	16
right3 wall's		-13		13
right3 walls				22
right3 wash				8
right3 waste				4
right3 wax	14	-4
right3 way		19
right3 we	10
right3 we're		14		-13
right3 weather		4		-7
right3 weatherstrip	24			-6
right3 wee	13	-7
right3 weep	10
right3 weld	-13	19	-5
right3 welder	27	-16
right3 were	10
right3 west	18
right3 wet	18			-16
right3 what	23	-8
right3 what's	-14	19
right3 when	8
right3 where	33
right3 which	5	-22	10
right3 while	-19			19
right3 white		10	6	-26
right3 whole				10
right3 why	32			-13
right3 wind				6
right3 wire	35	-12	-19
right3 without		10
right3 wobble	-9			16
right3 would		13		-18
right3 wouldn't	27		-9	-14
right3 wrong			10
right3 x	-7			15
right3 ya	-22		25
right3 yellow	11
right3 yet	17
right3 you'd				8
right3 you're	-8	19
right3 your	6
right3 ~		-27		-26	23
says owed before not		5
says owed behind not	8
sized	-32
sold so true	-42
sort area	-15
sort pack	-23
sort volume	-37
sort weight	-10
then add pp	-24			29
then adjust	12
then adjust pp	10
then ain't	7
then ain't is	7
then allow	17
then am	27			-19
then am is	27			-19
then anchor	16
then anchor pp	16
then aren't	16		-11
then aren't is	16		-11
then arrive b	6
then arrive s	-6	14
then back	15
then back pp	15
then bag	-16	10	15	-26
then bag b	-23	12	18	-26
then bag pp	23			-5
then balance	24			-17
then balance s	4
then band	-30			34
then band pp	-30			34
then believe	-20	18	14	-15
then believe b	-20	18	14	-15
then bend	26
then bend b	13
then bend pp	14
then bet	23
then bet b	23
then bind		8
then bind i	-20	23		-5
then bind s	4
then block				12
then block pp				12
then blow p	8
then blow s	17
then book	5
then bore	-22			34
then bore pp	-22			34
then borrow	17	-4
then borrow pp	17	-4
then bow	23
then bow pp	19
then box	-17		16
then box b	-29		13	13
then box pp	31			-22
then box s		-5	16
then brace	-13			11
then brace b	-10	10
then brace pp	-5	-12		17
then bring i	-8	20
then bring pp	6		22	-17
then brush	-30	32
then brush pp	-30	32
then bubble	5
then build i	13
then build pp				5
then bump	8
then bump pp	8
then burn	15
then burn b	23
then butt		13
then butter	13
then button				9
then button pp				9
then buy i	43
then buy pp		-24			53
then buzz	16	-8
then buzz s	18	-10
then call	11
then call b	25
then call i	16
then call pp		9
then cannot	8
then cannot will	8
then cant	-15	20
then cant will	-15	20
then cap	4
then cap pp	20
then carry	-14		15
then carry b	-14		15
then catch pp				10
then center	10
then center pp	7
then change	5
then change b	17
then change pp		-9		10
then charge	-26				5
then charge b	-33			6	8
then charge pp	16
then chip b	20
then chip pp						10
then choose	-11	18		-5
then choose b	-11	18		-5
then claim	19			-7
then clamp	8
then clamp pp	8
then clean	11
then clean b	10
then clean pp	8
then clear	8
then clear pp	15
then clear s	9
then clip	-6			17
then clip pp	-6			17
then close i	21
then close s	-9	15
then coat				13
then coat pp	-13			22
then come i					15
then compact	14	-8
then compact pp	14	-8
then complete	19
then complete b	18
then consum	-20	-4	-9	26
then consum pp	-20	-4	-9	26
then cope	28			-8
then cope pp	29			-12
then core b	-5	8
then core pp	6
then could	16
then could will	16
then couldn't	9
then couldn't will	9
then count		-11	17	-20
then count b	18
then count pp		-17	23	-28
then cover b	-32	12	7
then cover pp	4
then cover s	20
then crack b			5
then crank	5
then crank pp	5
then crosse	4
then crosse pp	4
then crown	19
then crown pp	19
then crumbl	16			-20
then crumbl pp	16			-20
then cup b	-9	18
then cup pp	33
then cup s	6
then cure b	25
then cure pp	12
then cure s	-10	20		-12
then curl	14
then cut i	7
then cut out	12
then cut out bpp	12
then cut s	18
then date	25			-18
then date pp	25			-18
then delaminate	23
then delaminate pp	22			-5
then deliver	-11		16	-6
then deliver pp	-16		18	-9
then dent	-10		22	-17
then didn't		-8
then didn't will		-8
then die		5
then die b	5
then die pp	5
then die s	-11	17
then dig	15
then dig pp	16
then ding	24	-17
then ding pp	24	-17
then do b	-4
then do i		-24		5
then do s	13
then dont		9
then dont will		9
then draw s	8
then drill	18
then drill pp	18
then drip b				8
then drip i	15			-6
then drip pp	11
then drive	8
then drop	38
then drop pp	36
then dry i	-12	-16	-10	23
then dry pp	23
then duct	17
then duct pp	17
then dump	16
then dump b	18
then dust	11
then dust b	11
then eat b	-8			18
then eat p	18			-9
then end	7
then end pp	7
then exchange	30	-9	-7
then expire		13
then expire pp		13
then extend	23	-4
then fail	24			-8
then feather	8
then feed	7
then feed b	7
then feel	7
then feel s	5
then figure		7
then figure b		10	-5
then file	20
then file pp	23
then fill	16
then fill b	5
then fill i	7
then fill pp	15
then find	5
then find b	19
then fish pp	6
then fit				13
then fit bpp	8
then fit pp	-6			26
then fix				10
then fix b				-10
then fix pp	-7	-10		31
then flash b	21			-14
then flash pp				9
then flicker b	-11			15
then flip pp	8
then float b		11
then float pp	19			-11
then flood	-26	-7		31
then flush i				9
then flush pp	6
then foam				20
then foam pp	-9			24
then forget b	10	-26
then forget p	-20	15
then fre	14
then fre pp	14
then freeze	17
then freeze p	16
then get b		9
then get i	8
then get s	21
then give						23
then give b		-8
then give p				-16		29
then give s	16
then glaze	14
then glaze pp	15
then glue				20
then glue pp				20
then go p				25
then grab	6
then grab b	5
then grab pp	11
then grind b	7
then grind pp		4
then grout				9
then grout pp				11
then hand	-7	-6		17
then hand pp	-13			21
then hang b	12
then hang pp				9
then happen		10		-6
then haven't	-19	10
then haven't has	-19	10
then heave	6
then heave pp	6
then help		13		-25
then help b	-6	16		-7
then hold b				8
then hold i	7
then hose				11
then hose pp				11
then hum	22
then hum b	24			-12
then hum i	5
then hum pp	8
then hum s	10
then install				5
then install b	13
then install pp				10
then jack	14
then jack pp	14
then jam	18
then jam pp	18
then keep b			8
then keep s	-8			4
then key	25			-9
then key pp	25			-9
then kick		10
then kick b	-21	23
then kill		14
then kill pp	11
then knock	7
then knock b	16
then know	7
then know s	26
then label			9
then label pp		-19	16	-18
then lag	-9			19
then lag pp	-9			19
then land					11
then land b	15
then land s	-10				26
then lap	-5			13
then laugh	12
then laugh pp	12
then lay b	17
then lay i	26
then lay pp				10
then leak i	18	-5
then leak pp	26			-4
then lean	-7		10
then lean pp	-14		14
then leave			9
then leave b			10
then leave i	-5	-15	19	-15
then leave pp			5
then leave s	-14			30
then let bpp	8
then let i	9
then level				14
then level b				25
then level pp	28
then lift	21
then lift b	10
then lift pp	20
then like	17
then like b	17
then live	15			-5
then load	5
then lock	14
then lock pp	14
then look b	9
then lose b	-6	10
then lower	11
then lower b	10
then make	10
then make b	23
then mark	7
then mark b		6		-9
then mark pp	13
then match		4
then match i	-13	23
then match pp				12
then meet	17
then meet s	17	-9
then melt	6
then melt pp	6
then might		-17	21	-25
then might will		-17	21	-25
then mill	18
then mill pp	19			-7
then miss b	28			-10
then miss s	9
then mitre	27	-21
then mix			-16	-18	4
then mix b	-6	13	-17	-22	11
then mix pp	27
then mount				25
then mount pp				28
then move	22
then move p				25
then nail	20
then nail pp	21
then need pp	-28	52		-13
then notch	11
then notch b	10
then notch pp	13
then notice				14
then notice pp	12
then oil	6
then oil pp	23			-6
then open	16
then open b	44
then open pp		-13	37
then open s	15	-10
then order					46
then order b					26
then order i	34
then order pp		-20			48
then other bpp	11
then ought	27
then ought will	27
then own	5	-11
then own b	5	-14		7
then pack b	-16	26
then pack pp	29
then paint	33
then paint pp	34			-5
then pass b		14
then pass s	15
then patch pp	9
then pay					15
then pay pp					16
then peel b	13
then peel i	-8	16
then peel pp	37	-20
then perish	-14	10		5
then perish pp	-14	10		5
then phone	24
then phone b	19
then pick i	-8	24		-4
then pick pp						16
then pick s	6
then pin	5
then pin pp	7
then pinch	5
then pinch pp	5
then pipe	18			-10
then pipe pp	18			-10
then pitch	6
then pitch pp	6	-6
then plan b				11
then plane	6
then plane pp	5
then plumb b	27
then plumb pp	-17			22
then point			5
then point b	20
then point i		-23	21	-22
then pok	20
then pok pp	20
then polish	23
then polish pp	15
then pop	30
then pop b	18
then pop pp	19			-8
then pop s	16
then pour	17
then pour pp	20
then promise	10	-7			5
then promise pp	10	-9			7
then pull	7
then pull pp	20
then pump	11
then pump pp	11
then punch		-23				24
then punch pp		-23				24
then push	16
then push b	8
then push pp	12
then put i		8
then quit	15
then quit bpp	15
then quit s	5
then quote b	23	-11
then raise pp			-14	13
then rake	-20	17
then rake pp	-23	19		5
then rang	6
then rang b	6
then rattle	12
then read	20
then read bpp	6
then read i	16
then read s	18
then rebuild	17			-10
then rebuild pp	15
then recaulk	25
then recaulk pp	27
then receive	-16	-24	29	-23
then receive pp	-16	-24	29	-23
then recess	-18			14
then reckon b	6
then recoat	20
then recoat b	13
then recut	10
then recut bpp	10
then redo p				12
then reglaze				7
then reglue	5
then reglue pp	6
then rehang b	24	-12
then rehang pp				6
then remind	8
then remind b	8
then rent			7
then reorder	13
then reorder b	14
then repair b				10
then replace				19
then replace b	27
then replace pp				23
then require		7	-12
then require pp		7	-12
then reseat	17
then reseat pp	17
then return						15
then return b	39
then return pp	-31	-9	-10			46
then reverse	5
then rip b	24	-11
then rock	10
then rock pp	10
then roll	-17			9
then roll b	-30	14	13
then roll pp		-7
then roll s		-17		29
then rot b	5
then run s	34
then rust	12
then rust b	12
then sag	23
then sag b	18
then sag pp	18	-5		-9
then sand		-5
then sand pp		-9
then save	7
then say i	18
then scrape	13
then scrape b	7
then scrape pp	16
then scratch	19	-12
then scratch b	29	-18
then scratch pp						15
then screw				11
then screw pp				12
then scribe pp				7
then seal pp				6
then see	10
then seize	7
then seize pp	7
then send				-5
then send b	15			-23
then send i	22
then send pp			7
then set i				10
then set s	15
then settle	18
then settle pp	17
then shave	12
then shave b	13
then she'll	11		-8
then she'll will	11		-8
then shear	15			-6
then shear pp	15			-6
then shim	13
then shim pp	6
then ship		-11			16
then ship pp				9
then ship s		-17	-15	-20	26
then short	-25		-10		19
then short pp	-25		-10		19
then should		6		-8
then should will		6		-8
then show b	23
then show i	12
then show pp	-7		8	-10		23
then show s					9
then sign	14
then sign pp	14
then sister	16
then sister pp	29	-16
then sit b			5	-14
then sit i			13
then sit pp	10
then skin			7
then skin pp			10
then skip	12
then skip pp	12
then sleep				8
then sleep b				10
then smell b			5
then smell pp	17
then smooth		6
then smooth b		6
then snap	10
then snap pp	10
then soak	12
then soak pp	12
then soap		-14		5
then soap b	27	-14		-8
then sort				7
then sort pp				7
then sound	34
then sound b	36
then space	-5			13
then space i	-11			17
then split	28
then split bpp	28
then spray	17
then spray b	11
then spray pp	12
then square	5			-8
then square b		10
then square pp	28	-4		-20
then squeak b		18		-6	-16
then squeak s	12
then stack	-4		31	-25
then stack pp	-4		31	-25
then stagger				4
then stagger pp				4
then stain				-10
then stain pp				-10
then stand b	-9			15
then stand i	28		-6
then stand pp	8
then start pp	9
then stay b			6
then stay i				-24	17
then stick i	14
then stick s	11
then stop				20
then stop pp	-8			20
then stop s				10
then straighten	22
then stretch	10	-9
then stretch pp	10	-11
then strip b	-14			5
then stuff b	-6	7
then stuff pp		-8		7
then supply	11
then supply b	8
then support	-15				18
then support b	-19				20
then swap i		13
then swap pp				20
then swear b	20	-6
then swear s	-21	24
then sweat		11
then sweat i	14
then sweep	18
then sweep pp	18
then swell b	-10			17
then swing b	5	8		-19
then swing s	-6			26
then tack		4
then tack pp		8
then tag	10
then tag pp	10
then take b			9
then take i	5
then take s			24	-7
then talk				18
then talk b	23
then tap		7
then tap pp		7
then tear b	10
then tell s	14
then temper	17
then temper pp	17
then test b	11
then test s	-4			11
then text	5
then text b	8
then texture	18
then texture b	18
then that'll	-15	-8	35	-7
then that'll will	-15	-8	35	-7
then they'll	16
then they'll will	16
then they've	-24	25
then they've has	-24	25
then thin	18
then thin b	17
then think b	-5
then think i	19	-8
then think pp	41	-9		-13
then thread		5
then thread s		9
then throw b	4
then throw p		-14		-18	21
then throw s	14
then tie	23
then tie pp	20
then tighten	14
then tighten b				8
then tighten pp	30
then tile	6
then tile pp	6
then tin	-21	6	7
then tin b	-21	6	7
then top	12
then top b	12
then torque		-6	-4
then torque pp		-6	-4
then tosse	21	-10	-6	-12
then tosse pp	21	-10	-6	-12
then touch pp	4
then touch up	22		-16	-9
then touch up b	22		-16	-9
then trace	9
then treat	-32	18		14
then treat pp	-32	18		14
then trim				15
then trim pp				16
then trip	8
then trip b	18
then trip pp	19
then try	16
then tuck				14
then tuck pp	-6			22
then turn b	11
then turn pp	-8		14			5
then unopen	-43	-28	35	10		4
then unopen pp	-43	-28	35	10		4
then unplug	4
then unplug pp	4
then use b				33
then use i	-27	26		-15
then vacuum	17			-8
then vacuum pp	17			-8
then wait	4
then wait b	5
then walk b	29
then walk pp		16
then walk s	-23			25
then want pp		11		-23
then warp						9
then warp pp						9
then wash pp	11
then watch	19
then watch b	19
then waterlog	10
then waterlog pp	10
then we'd			5
then we'd will			5
then we'll		7
then we'll will		7
then we've	-20	-24	32
then we've has	-20	-24	32
then weep	7
then weep i	11
then weigh	24
then weld	5	-17
then weld pp	5	-17
then weren't	22			-10
then weren't is	22			-10
then will		5
then will will		5
then wipe	26
then wipe pp	25			-4
then wire			-9	28
then wire pp			-9	28
then wobble b				13
then wobble pp	11
then won't	12
then won't will	12
then wont	17
then wont will	17
then work	12
then would		15
then would will		15
then wouldn't			7
then wouldn't will			7
then wrap b	10
then you'll	6
then you'll will	6
then zip	-12			17
then zip b	-12			17
unit L				8
unit bag	-49			35
unit bottle		12		-28
unit box	-36
unit bucket				-9
unit bundle	-23	-24	16		31
unit can	-25			16
unit carton	-22	-7	55	-30
unit cartridge	-60	9	-6	12	13
unit case	-50		42	-15
unit coat	117	-33		-17
unit coil	12
unit cu yd	-24	24
unit each	-55	6	6
unit from said	-39
unit from shared	-19	15
unit gal	-36
unit jar	-42	-25	40	-26
unit jug	-26		34	-14
unit kg	-12			7
unit kit	-18	-7	-8	31
unit length	-39			9
unit load	47	-23		-42
unit m	-9
unit oz	-13			13
unit pack	-21	37		-5
unit pail				7
unit pair	-7	29		-5
unit pallet			9	-6
unit pt				4
unit qt	-59	18	27
unit roll	-57		6	15
unit row	66	-31	-25	-9
unit set			-31	23
unit sheet	-48			31
unit sleeve	-16	19
unit spool	-13
unit sq ft	-9	5
unit sq m		-16			5
unit square	-25	10		5	7
unit stick	-55		11
unit tin	-49			25
unit ton	-38			27	18
unit tub	-57	26		9
unit tube	-70	16		10
unit yd	-78	42		13	18
use buy before	-27	9			17
use buy behind					7
use buy imperative behind		29
use buy modal behind	-4	24
use buy owed before	-34	38		-6
use buy owed behind		4
use buy past before			-6		21
use buy past behind	-19	-24			68
use buy present behind	-9			-15	38
use have owed behind	28
use have past behind	7		-12
use measure copula behind	15
use measure imperative behind	5
use measure modal before						6
use measure modal behind	-24	44
use move owed before			13
use move owed behind					9
use move past before			5
use need behind		6
use need modal before	17
use need modal behind		8
use need past before	-26	42
use need past behind	17
use need present behind		25
use null present behind	-10	-23	33	-15
use other imperative before	5
use other imperative behind		33
use other owed before		6
use other owed behind		5
use return before	-7					19
use return behind	-50		7			37
use return imperative behind	5	-17
use return past behind	-44	-28	-31			44
use return present before	20
use return present behind	-44	9	40	-7
use say modal before	30	-4
use say owed behind	6
use say past before	7
use see modal before		9
use see modal behind	8
use see past before	8
use use before				24
use use behind				18
use use imperative behind	8
use use modal before				9
use use modal behind		19		-20
use use owed behind	7	-8
use use past before				26
use use past behind				29
use use present before	9	-6
use use present behind	-18			15
verb add before	-24			30
verb add behind	-16	10		13
verb add imperative	13			-40
verb add modal	-22	35		-17
verb add past	-29	-13		44
verb adjust before	9
verb adjust behind	24
verb adjust past	10
verb arrive present		11
verb ask imperative	20
verb ask modal	-8	15
verb ask owed	5
verb ask present		8
verb back before	15
verb back behind		5
verb bag behind	15	-7		-23	13
verb bag past	4	-6		-21	10
verb balance behind	-13		8
verb balance imperative	-30	6	20		-6
verb band behind	12
verb band past	13
verb bang past	20
verb be imperative	11
verb be past	13
verb bed behind	-4			24
verb bed past				20
verb bend behind				11
verb bend imperative	26
verb better behind	-23	30		-21
verb better modal	-23	30		-21
verb bled behind	23	-11
verb bled present	23	-11
verb block before	4
verb block behind				5
verb block past				11
verb blow before	8
verb blow imperative	21			-5
verb blow present		15
verb bolt before	20
verb bolt behind		-17		22
verb bolt past		-9		14
verb book before	11
verb book behind	8
verb book past	15
verb bore before	-15			23
verb bore behind	5
verb bore past				12
verb borrow behind	-13		7
verb bow before	31	-8
verb bow past	36	-18	-8	-9
verb box before	-8		-14	13
verb box behind			9
verb box imperative	13
verb box past	14
verb box present	-11	-12		15
verb brace behind	15
verb brace past	17			-8
verb break before	22
verb break behind				9
verb break past				6
verb bring before			6
verb bring behind		18
verb bring imperative		17
verb bring modal	-15	31
verb bring owed	20	-11
verb bring past	-39	-46	32	-32		44
verb bring present		22
verb brush behind	21	-8		-12
verb brush past		15	-8	-17
verb bubble before	7
verb build before				13
verb build imperative			-10	7
verb build modal	11
verb build past				13
verb burn before	20			-9
verb burn behind				18
verb burn owed	10
verb burn past				10
verb bury behind			12
verb bury past			12
verb bust before			13
verb bust past			9
verb buy before	-8	6	-6
verb buy behind					7
verb buy imperative		36
verb buy owed	-9	22
verb buy past		-17			11	8
verb buy present	-7	-32		-8	45
verb call present	13
verb can before	-11	16
verb can behind	14
verb cancel imperative	11
verb cap before				5
verb cap owed	19
verb cap past				16
verb carri past	9
verb carry behind	12
verb carry owed	-6		16
verb catch behind	10
verb catch present	7
verb caulk before	19
verb caulk imperative	8
verb caulk owed	9
verb change before	-26	5		28
verb change behind	-9			9
verb change imperative		30		-15
verb change modal	8	8		-26
verb change owed	-20	33		-21
verb change past	-19			37
verb change present	-5	-5		31
verb chase before	5
verb chase behind	15
verb check behind	9
verb check imperative	13
verb chew past	7
verb chip before				-7		21
verb chip behind	23
verb chip past	8					8
verb clamp before	15
verb clamp imperative	20
verb clamp past				5
verb clean before	13
verb clean behind	4
verb clean imperative	5
verb clean past	12
verb clear imperative	-9	-10	-8	19
verb clear modal	-13		18
verb clear past	19
verb clip before	-5	-4		14
verb clip behind	26			-7
verb clog past	5
verb close before	37		-12
verb close past	13	-7	-13	4
verb close present	26
verb coat before	-7			15
verb coat behind	15
verb coat past	-12	-5		18
verb come behind					17
verb come copula	15
verb come modal		19
verb come owed	22
verb come past		-25			19
verb come present					7
verb consum past	-23	-12	-17	32
verb cope past	11
verb copy behind	-13			23
verb copy present	-13			23
verb core past	12
verb could behind		6
verb count behind			14	-5
verb count past	-20		32	-15
verb cover behind	11
verb cover imperative	5
verb cover modal	15
verb cover past	8
verb crack behind	19
verb crook before	18
verb crook past	19
verb crush before	11
verb crush behind	14			-9
verb crush past	17
verb cup before	5
verb cup behind			11
verb cup present			11
verb cure before		10
verb cure behind	-10		-13	18
verb cure modal	-8			6
verb cure past			-15	15
verb cure present	-15	21		-10
verb cut present	16
verb date behind	13
verb date past	13
verb decide behind	-8		16
verb delaminate before	16
verb delaminate past	13
verb deliver before	-15		22	-7
verb deliver past	-20		25	-10
verb demo behind		11
verb dent before	28	-6		-10
verb dent past	20
verb dial behind	11
verb dial past	15
verb didn't modal	-18	22
verb die before		11
verb die behind	8
verb die past	19
verb die present	-7	14
verb dig before	10
verb dig behind		16		-15
verb dig past		9		-12
verb dig present	22	-6
verb ding behind	20
verb ding past	19
verb do imperative	25
verb do past		-7		34
verb do present	25
verb doesn't behind	15
verb doesn't modal	9
verb don't before	32			-8
verb don't behind	-10	6
verb dont before	9
verb dont modal	12
verb drag before	6
verb drag past	11
verb drain past	21
verb draw imperative		10
verb draw past		-9		12
verb drill before	20
verb drill modal	19
verb drill owed	21
verb drip behind	9
verb drip past	12
verb drive behind	-8
verb drive past				5
verb drop imperative	8
verb dry modal	9
verb dump present		6
verb ease behind	18
verb ease past	17
verb eat before	20
verb eat behind				7
verb eat modal	30	-11		-13
verb eat past	5
verb eat present	-8			16
verb edg behind	19
verb edg past	19
verb end before	6
verb expire past	-6	16
verb falta behind		13		-11
verb falta owed		11		-7
verb feather behind	20
verb feed behind				5
verb feel modal	30
verb feel past				7
verb figure behind		11
verb figure imperative		19
verb figure modal	11		-12	-5
verb figure past	21		-13
verb figure present		11
verb file behind	8
verb fill before	24
verb find imperative	-23	31
verb find modal	13
verb find present			11
verb finish before	11	-5
verb finish imperative		-5
verb finish modal	17	-16
verb finish present				25
verb fish behind	26			-12
verb fish past	23			-16
verb fit before		-5		19
verb fit behind				7
verb fit modal	36	-25	-15
verb fit past	-40			48
verb fit present	32
verb fix before				17
verb fix behind	9
verb fix imperative	6
verb fix past				16
verb fix present	16
verb flash before	6
verb flash behind	20
verb flash past	25
verb flip past	28			-10
verb float behind				5
verb float owed	23			-11
verb float past	-9			19
verb float present				7
verb flush before	13
verb flush behind	11			-6
verb flush imperative	25	-5
verb flush past	21			-5
verb flush present		7
verb foam before	13
verb foam behind	-4			19
verb foam past				17
verb fog behind	9
verb forget before	6
verb forget past		16		-4
verb forget present	11
verb frame behind	18
verb frame past		5
verb frame present	14
verb fray before	5
verb fray past	5
verb fre behind			12	-9
verb fre past			10	-6
verb fur behind	-20	9		10
verb get copula	-11	22	-10	-5
verb get imperative		68
verb get modal	29
verb get owed		7
verb get present	24	-8
verb give before	19
verb give imperative	11
verb give present	-12				11	13
verb glaze before	8
verb glue behind	-4			19
verb glue imperative	11
verb glue modal		15
verb glue owed	-9		20
verb glue past				32
verb go imperative		12
verb go past				23
verb gonna before		7
verb gonna behind	-9		24	-9
verb gonna modal	9
verb gonna owed	-25		28	-12
verb gotta before	9
verb gotta behind		11
verb gotta owed		6
verb grab before	18
verb grab modal	-4	19
verb grab past		-35	-22	-17	38
verb grind before	5
verb grind behind	5
verb grind past	10
verb grout before	9
verb grout behind	23
verb grout imperative	13
verb grout modal	12
verb grout past	16
verb grout present	4
verb guess modal		-27	15
verb guess present	-8	20
verb hand behind	16
verb hand past	-7			17
verb hang before				28
verb hang behind				7
verb hang imperative	-10		12
verb hang modal	20
verb hang owed	15
verb hang past	-5			52
verb has behind	11
verb has owed	6
verb hate behind	5
verb hate present	5
verb haul before	-10	18		-19
verb haul behind	5
verb have owed	6
verb have past	7		-11
verb he'll behind		9
verb he'll modal		9
verb head before			-9	8
verb head behind		9
verb head present	-14	12		6
verb heave before	6
verb heave past	7
verb hide behind	9
verb hit imperative	12
verb hit modal	20
verb hold imperative	5
verb hold modal	-22	26
verb hook behind	-7	-5		21
verb hook modal	12
verb hook past	-13			24
verb hose behind	17			-8
verb hose past	17			-8
verb hum behind	5
verb hum past	7
verb i'd behind	10
verb i'd modal	10
verb i'll behind		6
verb i'll modal		6
verb inject behind	-8				19
verb install before	-9	-8		28
verb install behind	-13			23
verb install past	-31			47
verb install present	22
verb insulate behind	-14			20
verb insulate imperative	7
verb it'll behind	-12	7	14
verb it'll modal	-12	7	14
verb jack behind		-10		9
verb jack past		-9		8
verb jam behind	20
verb jam past	20
verb jet behind	10
verb jet past	10
verb join behind	-11	-7	-10	19
verb keep behind			16
verb keep past	-18		33
verb key past	24
verb kick before	7
verb kick behind	18
verb kick past	11
verb kick present	5
verb kill behind	14
verb kill past	15
verb kink before	11
verb kink past	14
verb knock before	15
verb knock imperative	-16			21
verb knock modal	5
verb knock past	15
verb knock present	25
verb know before	5
verb label behind	21
verb label imperative	21
verb lag behind	-12	-4		20
verb lag past	-12	-4		20
verb land behind	8
verb land owed	11
verb latch modal	12
verb latch present	6
verb lay before	-11			8
verb lay behind				11
verb lay imperative		7		-29
verb lay modal		5
verb lay past	-12			40
verb lay present			7	-14
verb leak behind	-5			15
verb leak modal	-13	-17		22
verb leak past	6
verb lean behind	20
verb lean past	20
verb learn behind	7
verb leave before			30
verb leave past			6
verb leave present		-9	11
verb level imperative		12
verb lift behind	13
verb lift imperative	9
verb lift past	5
verb like behind		27
verb like modal		30
verb like owed	-17	23		-11
verb like present	8
verb line before	-6			15
verb line behind	11
verb line past	-6			15
verb load behind			17	-6
verb look modal	20
verb look present		12
verb lose modal	20
verb love behind				10
verb lower behind	9
verb lower imperative	8
verb lube before				14
verb make before	19
verb make imperative	-23	32
verb make past				23
verb mark before	10
verb mark behind		8
verb mark imperative	14
verb mark past		9
verb mask before	30		-22
verb mask imperative	4			-8
verb match behind	8
verb match imperative	9
verb measure before	5
verb measure present	8
verb meet before	17	-6
verb meet behind	6
verb meet present	17	-8
verb meg behind	21
verb meg past	22
verb mention past	4
verb miss before	15
verb miss behind	-5	9
verb miss imperative	8
verb miss past		-17		10
verb miss present		20
verb miter past	8
verb mitre present	5
verb mix behind	8
verb mix past	7
verb mount before	-17	-12	-13	29
verb mount behind	-9		-5	19
verb mount past	-29	-8	-17	40
verb move before	19
verb move behind	6
verb move imperative	7
verb move past	41
verb mud before	9
verb mud behind			13	-11
verb mud past			16	-13
verb nail behind				9
verb nail past				6
verb nail present				9
verb need before		17
verb need behind		14
verb need owed		11
verb need past	-25	45		-6
verb nick past	5
verb nip behind		-18	19	-17
verb notch before	17
verb notch behind	15
verb notch imperative	9
verb notch past	22
verb notice behind	5
verb notice past	6
verb null present	-10	-23	33	-15
verb oil behind	22
verb oil imperative	9
verb oil past	20
verb open before			9	-15
verb open imperative	10
verb open modal	22
verb open owed	19	-6
verb open past			11
verb open present	10
verb order before	-20	14		-10	21
verb order behind		7			11
verb order imperative		19
verb order modal	-8	18
verb order owed	-14	23
verb order past	-14			-14	68
verb order present	-7	22		-13
verb owe behind		9
verb owe present		5
verb pack before	-4	17		-16
verb pack behind				17
verb pack imperative	-12	20		-15
verb pack owed	19
verb pack past				25
verb paint imperative	11
verb paint modal			7
verb paint present	15
verb paper past	26
verb pass before	13
verb pass behind				16
verb pass present	-13			24
verb patch owed	9
verb patch present	7
verb pay behind	5	-15	-7	-12	11
verb pay past	9	-16	-6	-11	9
verb peel behind	26
verb peel past	22
verb peg before	5
verb peg past	4
verb pick before	16
verb pick behind	-8	9			24
verb pick imperative		34
verb pick modal		8
verb pick owed	-11	20
verb pick past	-13	-12		-13	62
verb pick present		9
verb pin behind	-26	-5		21
verb pin past	-23			20
verb pinch behind	10
verb pinch past	13
verb pipe past	21			-12
verb pitch before	15
verb pitch past	13
verb place behind	-17			26
verb place imperative	-18			27
verb plane behind	15
verb plane owed	17
verb plow past	24			-20
verb plug before	24
verb plug behind	-8			11
verb plug imperative	-17		19
verb plug modal	18
verb plug owed	26		-13
verb plug past				14
verb plug present	11
verb point before				13
verb point imperative	12
verb point present			6
verb pok past	20
verb polish behind	7
verb pop before	26
verb pop modal	4	10	-6	-14
verb pop past	19
verb pop present	7
verb pour behind	9
verb pour imperative	-6			15
verb pour owed	11
verb pour past	7
verb presse past	27			-21
verb prime before	-6	17
verb prime imperative	4
verb prime present	17
verb promise past	-13	15		-20	12
verb pull imperative	13
verb pull past	7
verb pump behind	19			-8
verb pump imperative	14
verb pump past	15			-8
verb punch past				5
verb purge behind	22
verb purge imperative	15	-6
verb purge past	16			-6
verb push behind	13
verb push modal	8
verb push present	6
verb put before	17
verb put modal		8
verb put owed	-15	8	15	-34
verb put past				9
verb put present		16		-14
verb putty imperative	-19	23
verb quit behind	8
verb quit past	8
verb raise behind		6		-5
verb raise imperative	11
verb raise past		12		-14
verb rake behind	5	-18
verb rake past		-20		14
verb rate before	-16	12
verb rate behind				11
verb rate past	-11			12
verb rather behind	10
verb rather modal	10
verb reach behind	6
verb reach modal	7
verb rebuild behind	-18	-7		25
verb rebuild present	-6			14
verb recaulk behind		-17	13	-9
verb receive past	-49	-25	35	-28	28
verb reckon behind		12	-6	-13
verb reckon present				-4	7
verb recoat behind	20			-8
verb recut behind	11
verb redo behind	-9	10
verb redo imperative	33	-5
verb redo past	-18			6
verb refit behind	27			-14
verb refix behind	-20	-13	-10	27
verb refix past	-10	-8	-7	22
verb rehang before	12
verb rehang behind				12
verb rehang imperative		13
verb rehang past				13
verb rekey behind	10
verb rekey past	9
verb relay behind	-7			15
verb relay past	-10	-6		17
verb remake behind				12
verb remember behind	5
verb remind behind		-4	9
verb remind imperative		-4	9
verb rent behind	11
verb rent past	11
verb reorder behind	-20	13			10
verb replace before	-8			26
verb replace behind		-5
verb replace owed	35	-11		-20
verb replace past	-6			35
verb reseat past	11
verb reset behind				9
verb reset imperative		-10		7
verb reset past				8
verb return before	-9					20
verb return behind	-37	-24	13	-14		39
verb return imperative	5	-17
verb return past	-46	-18	-26	-25		54
verb return present	-14		33
verb reverse past	9
verb rip modal			11
verb rip owed			12
verb rob behind				11
verb rob past				11
verb rock past	9
verb rod behind	-5	14		-14
verb rod past	24			-15
verb roll before	51			-20
verb roll modal		-11	-9	13
verb roll past	5
verb roll present	25
verb rot before	6
verb rot past	7
verb rough before	7
verb rough behind	24			-8
verb rough past	26
verb round behind	9
verb rub behind	6
verb run before	7
verb run imperative		5
verb run modal		13
verb run owed	-13	19		-14
verb rust before	5
verb rust past	5
verb sand before	9
verb sand behind	7
verb sand imperative	8
verb sand owed		5
verb sand past	7			-13
verb sand present	24
verb save behind			22	-8
verb save past	-10		26	-9
verb saw behind	17
verb saw present	17
verb say modal	6
verb say past	17
verb scab behind	5
verb scrape before	16
verb scrape behind	20
verb scrape imperative	21
verb scrape past	25
verb scratch before						13
verb scratch behind	23
verb scratch past						5
verb screen before	7
verb screen owed	4
verb screw before				7
verb screw behind				5
verb screw imperative	9
verb screw modal			4
verb screw past				14
verb screw present	-9			18
verb scribe modal	21
verb scribe owed	12
verb scuff behind	11
verb seal before	12			-6
verb seal behind				9
verb seat before	10
verb seat modal	10
verb see before		7
verb see owed	10
verb seize before	8
verb seize past	16
verb send before		4
verb send behind	-8					13
verb send imperative		12
verb send modal		13
verb send owed	-5	14
verb send past	-16					31
verb set before	-11	5	18	-25
verb set modal	22
verb set present	-21		23	-28
verb settle before	-11	-5		19
verb settle behind	-15		-8	-18	24
verb settle past	-24	-18	-7	7	23
verb shave behind	18
verb shift before	6
verb shift past	9
verb shim before	15
verb shim behind	19
verb shim owed	15
verb shim past	18
verb shin behind	17			-7
verb shin past	17			-7
verb ship before					15
verb ship behind			9
verb ship past			13
verb ship present	-12				29
verb shoot behind	11
verb shoot imperative	10
verb short behind	16	-9		-7
verb short past	17	-9		-4
verb show before			9
verb show behind	11
verb show past	-8		12
verb show present	13
verb sign owed	15
verb silicone before	29	-13
verb silicone imperative	10
verb silicone owed	9
verb silicone present	9
verb sister behind	-4			14
verb sister imperative			17	-30
verb sister modal		20		-26
verb sister owed	20
verb sister past	-15			40
verb sit imperative	23	-11
verb sit modal	-13					7
verb sit owed			11
verb sit past	20
verb sit present	12
verb size behind	17
verb skim owed	9
verb skim present				8
verb skin before			13	-5
verb skin past			12	-6
verb skip before	8
verb skip behind	8
verb skip imperative	9
verb sleeve behind	-37			40
verb sleeve past	-37			40
verb slid behind				8
verb slid present				8
verb slide behind	8
verb slide modal	5
verb slide present	6
verb slip before	23			-7
verb slip behind	-10	15
verb slump past	10
verb smell behind	4
verb snake behind	17
verb snake past	18
verb snap behind			7	-4
verb snug behind	22
verb snug past	26
verb soak past	8
verb sold behind	10
verb sold present	10
verb solder before	8
verb solder behind					12
verb solder past	-7				14
verb sort before	18
verb sort past	18
verb sound behind	14
verb sound imperative	14
verb spend behind	-9				17
verb spend past	16
verb spend present	-25	-23	-13	12	24
verb spill past	12
verb spin behind	20
verb spin present	20
verb splice modal	17
verb splice owed	8
verb splice past				14
verb split past	-10			23
verb spot behind	-16	18
verb spot past	20
verb spray before	25			-8
verb spray behind	11
verb spray imperative	13
verb spray past	27
verb square behind	8	-7
verb squeak before	5
verb squeeze behind	-16			24
verb squeeze past				17
verb stack behind				5
verb stack past				9
verb stagger behind	-12			16
verb stagger past	-7			14
verb stain before		7
verb stain behind		7		-6
verb stain imperative	9
verb stain past		9
verb stand behind	-9			16
verb stand past	-6			16
verb stand present				8
verb staple behind		13	-9	-19
verb staple past		14	-8	-18
verb start before	12
verb start imperative	5
verb start modal				13
verb stay before	22
verb stay behind			11
verb stay imperative	-14		19	-5
verb stay modal	12
verb stay owed	9
verb stick behind				10
verb stick imperative			13	-13
verb stick modal	7
verb stick past	-12			35
verb stop before	-9		12
verb stop past	15
verb stop present	-7		10
verb straighten behind	8
verb straighten past	23
verb strap imperative	-4	6	7	-16
verb strap modal	6
verb strap past				6
verb stretch past	-9			16
verb strike before	13
verb strike modal	13
verb strip before	6
verb strip imperative	17
verb strip past	4
verb strip present	-9			15
verb stub behind	17
verb stuff behind				9
verb stuff past				21
verb supposed before	-11				23
verb supposed behind	17
verb supposed owed					15
verb swap before				23
verb swap behind				9
verb swap imperative		21		-26
verb swap modal	14			-27
verb swap owed	-17	22		-7
verb swap past	-4			44
verb swap present	27			-19
verb swear behind	29	-14
verb sweat behind	-35	-22	14		12
verb sweat imperative	-31	-21	17	16
verb sweep behind	24
verb swing before	9
verb swing modal	-5	12
verb switch behind	-15	-10	22
verb switch past	-15	-10	22
verb swop past				12
verb tack behind				10
verb tack past		-5		10
verb take behind						8
verb take imperative		-37	23
verb take modal	-21	28
verb take past						37
verb talk behind	5
verb talk owed	13
verb tap past	13
verb tape modal	4
verb tape present	11
verb tear before	7
verb tear behind	13
verb tear past	17
verb tell before	6
verb tell past	23
verb tell present				4
verb template past	11
verb test before	22
verb test behind	15
verb test past	27
verb text behind	5
verb text imperative	7
verb that'll behind	-24	31	-10	-17
verb that'll modal	-24	31	-10	-17
verb thin behind	-4			8
verb think past		-10			14
verb throw imperative	-17	27
verb throw modal	13
verb throw past	-5			27
verb throw present	16
verb tie before	7
verb tie imperative	-7			16
verb tie past	25
verb tile behind				9
verb top before	9
verb top behind	22
verb top past	11
verb top present	16
verb torque past	31			-21
verb touch imperative	10
verb touch modal		12
verb touch past	18
verb trace behind	14
verb trace past	14
verb trim before				5
verb trim behind				6
verb trim imperative	10
verb trim owed	18
verb trim past	-15			30
verb trip before	11
verb trip past	7
verb try imperative	-12		16
verb try modal	22
verb try past	12	-10	-17	7
verb tuck behind	6
verb tuck past	13
verb turn before			5
verb turn imperative		-18		10
verb turn modal	9
verb undercut behind	8
verb unopen before	-36		43	-17
verb unopen past	-36		43	-17
verb use before				24
verb use behind				18
verb use imperative	8
verb use modal		14		-7
verb use owed	7	-8
verb use past				38
verb use present	-9			11
verb vacuum before	21			-6
verb vacuum behind	4
verb vent imperative	16
verb vent past				7
verb wait before	8
verb wait imperative	22	-12
verb walk before		11
verb walk behind					4
verb walk modal	-10	17
verb walk past					9
verb walk present	16
verb wander before	17
verb wander past	17
verb want modal		12
verb want present		18
verb warp past	17
verb wash behind	31
verb wash imperative	23			-10
verb wash owed	17
verb wash past	12
verb wax behind	8
verb wax past	9
verb weatherstrip owed	-8	16
verb weep before	16
verb weep behind	12
verb weep imperative	19	-11
verb weigh before	7
verb weigh behind				11
verb weigh past		-12		16
verb weigh present	18
verb weld imperative	18
verb weld modal	6
verb weld past				8
verb whip behind	9
verb whip past	9
verb will before	6
verb will behind	29
verb will modal	28
verb wire before	19
verb wire past	14
verb wobble before	8
verb wobble past	8
verb work behind			11
verb work modal	9
verb work past	16
verb work present	14
verb would before		10
verb would modal		9
verb wouldn't behind		14	-10	-5
verb wouldn't modal		11
verb wrap before	-23	30	-18	-19
verb wrap behind				8
verb wrap imperative	32
verb wrap modal		15	-8
verb wrap past				25
verb wrote behind	12
verb wrote present	12
verb zip behind	7
volume after have far	-49	19	23	-28
volume after have sentence	-45	22
volume after need far	-8	15	5	-34
volume after need here		10		-4
volume after need sentence	-62	41		-21	9
volume after none far	-47			7
volume after none here	-44		-19	40
volume after none sentence	-34		6	29
volume after used far	-9
volume after used here	18	-26	8	-15
volume before it ate		-5	-19	22
volume before it back	-30		11	-21	-9	19
volume before it bought	-41	28	-6	-27	10
volume before it came	-40	-28	37
volume before it have	-27		69	-23
volume before it lacks	-34	-8			21
volume before it need		27
volume before it used	-5			9
volume behind it back	-9	-15	30	-12
volume behind it came	-18	21	-22
volume behind it have	-13	-8	25
volume behind it lacks	24	-31		-46	19
volume behind it need				-14
volume behind it used	-12			14
volume beside be	-36	23	-31	22
volume beside bring	-7	8
volume beside buy		15	-15	-5
volume beside buy b nobody	5
volume beside buy b other	-20	41	-21	-8
volume beside figure		10	-15	-18
volume beside get	-14	21
volume beside give	-19	-28	5	21	-8
volume beside go	-36	13		12
volume beside have	-23	-7	43
volume beside have b person	-4		27
volume beside is	8		10	-37
volume beside leave	-47	4	33	-34
volume beside like	-30	-13	21	6
volume beside measure s other		12	-19	-20
volume beside move p other	-8			17
volume beside move pp nobody	-22	-19	34	-12
volume beside move pp other	-30	17		-23
volume beside need		5
volume beside need b nobody	9
volume beside need b other	-14	24
volume beside need b person		12
volume beside nothing	-50	11	23
volume beside other b other	-46	29		-32
volume beside other b person	-48		-12	35
volume beside other p nobody	-42	-21		10	-8	17
volume beside other p other		-33	-32	37
volume beside other p person	-21	-24	43
volume beside pick	-18			-7	17
volume beside pour	-5			15
volume beside say b other		28	-18	-19
volume beside take	-10	-21		11
volume beside undefined is other	8		10	-37
volume beside use				48
volume beside use b person	-6			29
volume beside use pp nobody				28
volume beside use pp other	-13			28
volume beside use pp person				22
volume beside want	-29	40	-18	-11
volume beside work b nobody	-46		9	7
volume beside work b other		7	-5	-43	6
volume beside work pp nobody	-14	-35		26
volume beside work pp other	-5	-30	-40	41
volume beside work pp person		-18	-19	8
volume buy imperative behind	-18	34
volume buy past behind	-33	-27	-13	-18	38
volume cue ate	-6	-21	-39	31
volume cue back	-41		37	-25	-9	15
volume cue bought	-54	11		-42	29
volume cue came	-29	-11	9	11
volume cue have	-46	-16	76
volume cue lacks	13
volume cue need		48
volume cue used	-16			27
volume flawed	9		-10
volume have present behind	-22		33
volume left ,	-22	-10	18	12
volume left .	-52		24
volume left :	-14	-10	18
volume left G	-43	5	17	9
volume left about	-5	-25	18
volume left and	-25	11	-29	-13	32
volume left be	-36	23	-31	22
volume left bring		12
volume left buy	-9	24
volume left figure		13	-8	-11
volume left get	-36	26	16	-26
volume left have	-21		34
volume left leave	-20	7	14	-13
volume left like	-30	-13	21	6
volume left maybe	5	-14	15	-18
volume left me		17	6	-30
volume left need		12
volume left plus	-21	31		-8
volume left pour	-40			43
volume left so		32	-45	-29
volume left take		-9	5	6
volume left the	16	-23
volume left there's			21
volume left through	-21	-11	-18	42
volume left up		-6	-20	7	11
volume left use				25
volume left want	-29	40	-18	-11
volume left with	-33		9	11
volume list need	18		-31	-16
volume more	-14		18	-25
volume move past before	-8		21
volume move past behind	-32	-16	22	8
volume name flawed	-5	-8	20
volume named before area		-29		11
volume named before finish	-42		9	4
volume named before material			18
volume named before part	42	-20	-19	-28
volume named before surface			-14	13
volume named before word	-10	21	-17
volume named here finish	-68	31
volume named here material	-41
volume named here part	-14	27	-19	-16
volume named here surface	-10	9
volume named here word	-18	18	22	-20
volume need modal behind		10		-11
volume need owed behind		23
volume not ahead		16	-35
volume null copula behind	-20	15	18	-13
volume null none no	-13	7	12
volume other copula before	21		-24	-15
volume other copula behind	-14	-11		27
volume other imperative behind		27
volume other modal behind	-32	6		-38	18
volume other past behind		-42	9
volume other present behind	-18			17
volume pointing	-31	47	-18	-15
volume right 
	-40	20
volume right #	-18	29
volume right ,	-9		8
volume right .	-29
volume right Q	-16		7	-29	5
volume right and	-27	15		7
volume right for	-27	23
volume right go	-29	-33		45
volume right i	-26	7		8
volume right in	-18		-7	26
volume right is		24	-19	-7
volume right leave			40
volume right no		-11	23	-22
volume right of	-26	11
volume right on	-47	5	24
volume right so		-16	18	-19
volume right the	-21	28	-27	5
volume right to	-33	4	-13	-18	22
volume right use				22
volume say imperative behind	-44	32		5
volume says copula before	21		-24	-15
volume says copula behind	-22		13
volume says imperative behind	-48	66
volume says modal behind	-10				5
volume says none no	-13	7	12
volume says owed behind	-7	42
volume says owed behind not	21	-15		-10
volume says past before	-49		10	14
volume says past behind	-8	-16		28
volume says past behind not	-9	-25	9	10
volume says present behind			14
volume sized		9	5	-33
volume sold so false	-14	8
volume sold so true			18
volume then have b	-29		18
volume then move p	-20	-15	-21	40
volume then move pp			23
volume then other b	-10	-34	11	9	12
volume then other p	13	-22	-36			13
volume then undefined has	-34		4	15
volume then undefined is		27	-7	-9
volume then undefined will	-16			13
volume then use pp	-16	-16	-21	34
volume then work b	-48		13	27
volume then work pp	-39		5		6
volume use past before				22
volume use past behind				34
volume use present behind	-6			29
volume verb be before	21		-24	-15
volume verb be behind	-14	-11		27
volume verb bring behind			10
volume verb buy behind	-21	13			12
volume verb figure behind		10	-15	-18
volume verb get behind	-5	7
volume verb give behind	-22	-27	10	19	-5
volume verb go behind	-34	9		7
volume verb have behind	-22		33
volume verb leave before			31
volume verb leave behind	-30		25	-18
volume verb need behind		11
volume verb null behind	-23	13	25	-16
volume verb null no	-13	7	12
volume verb order behind	-23	12			13
volume verb pick behind	-18			-7	17
volume verb pour behind	6
volume verb run behind	5	8	-23	-10
volume verb take behind		-11	8			7
volume verb use before				22
volume verb use behind				44
volume verb want behind	-30	39	-14	-11
volume whole clause	-12
volume work imperative behind	-18	19	-32	9
volume work modal behind	-9		-27	19
volume work past before	-43	-36	18	23
volume work past behind	-8		-30	34
weight after have far	-24	34	-7	-11
weight after need here	-4	14
weight after need sentence		13		-26
weight after none far	8	-25	-5		9
weight after none here	-20	-16	20	6
weight after none sentence				7
weight after used far	-42	15	26	-38
weight after used sentence	-25	-18		34
weight before it have	-39	9	35	-44
weight before it need		17		-18
weight before it used				30
weight behind it have	-36		8	14
weight behind it need		-4
weight beside get	-33	22	10	-24
weight beside hold	28
weight beside is	5			-9
weight beside measure i other	27
weight beside measure pp other				7
weight beside measure s other		-13		-18	17
weight beside need	4
weight beside need b nobody	4
weight beside other b other	-17	22
weight beside test	14
weight beside undefined is other				-6
weight beside use	-14			19
weight beside use pp other	-14			19
weight beside weigh			-5	7
weight beside work b other	-19	-31	9	19
weight beside work pp nobody	-22	-6		27
weight beside work pp other		-19		10
weight cue have	-18		42	-23
weight cue need	-34	43		-11
weight cue used	-24			33
weight flawed	-22	5		16
weight left ,	-13	-6	5	8
weight left G	19	5	-19	-33
weight left about	-23		-18	25
weight left and	-54	39	-13	-28	14
weight left at	31
weight left get	-20	4	14	-9
weight left hold	28
weight left in	-33		-11	34
weight left is	30
weight left with				8
weight measure past behind	-9	-15		20
weight measure present behind	32			-8
weight name flawed	-18
weight named before finish		-13	-9	15
weight named before fixture	34	-10		-11
weight named before part	19	-18
weight named before surface		9
weight named before word	7	7		-23
weight named here material	-79	22		25
weight named here word	-8	-8	9	7
weight null copula behind	11			-11
weight null none no	-9	6			7
weight other copula behind				9
weight other past behind	-20	-34	27
weight right #	-42	14	11
weight right ,	18	5	-11	-37
weight right .	-21		7		9
weight right and	-20			32
weight right for	16
weight right i		13	-5
weight right in	-20	10	-23	13
weight right leave	-13	-13	24	-15
weight right on	21	11	-13	-32
weight right the		10
weight says imperative behind		26		-21
weight says none no	-12	7			8
weight says past before		-33		10
weight says past behind	-17	-11		23
weight says past behind not	-9			17
weight says present behind		-24	6
weight sized	-20	32	-5
weight sold so false	-21
weight then other p	-12	7	-20	8
weight then undefined is				8
weight then undefined will	5			-5
weight then work b	-11
weight then work pp		-9		17
weight use past behind	-14			19
weight verb be behind				9
weight verb get behind	-21		27	-23
weight verb null behind	11			-11
weight verb null no	-9	6			7
weight verb use behind	-14			19
weight verb weigh behind	-16			18
weight whole clause			5	-10
weight work past before		-13	-10	12
weight work past behind			-10	10
weight work present behind	-7	-18		19
who nobody owed		13
who nobody present			56
who thing imperative	20
whole false		-27	22
whole true	-14
`;
