/** Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of none, need, have, used, bought, returned. */
export const FATE = `
after #	8
after &		12	-5
after (	-5			-22		5
after )	-7		5	-14		16
after +	-6			10
after /	-14		16
after 1	-21		23
after 22	-17		22
after =	22			-8
after @	-9			12
after about	28
after above	49
after acclimate	-12		17
after account			14
after across	8
after actually	20	-13	-6	-6
after add	-7	-15		19
after adjust	24
after aff	-11			17
after after	4
after again	27
after ain't	17
after air	34	-6		-21
after allen	19
after already	-12
after altogether	26
after an	6
after anchor	9
after another		5		-5
after any	4	-13
after anybody		-23
after anybody's		15	-10	-10
after anyhow	14
after anything		5
after apart	17
after around				17
after arriba	26
after arrive			5
after arvo				12
after attic	23
after b	18
after backsplash	-13			20
after backwards	29			-8
after bad				9
after bag	-5	10		-16
after balance	22
after bar				9
after bare	14
after basement			8
after bathroom				22
after beat	14		-14	-26
after bed	23
after bedroom				6
after bedrooms	16
after behind	8
after belly	21
after bench	-10	-13	10	12
after between	10
after big	6
after black	16			-9
after bleed	5
after bleeding through		11
after blow	24
after board	28	-24	-16
after boil	8
after bolt				12
after bore	-17		14
after both	5
after bottom				7
after bought far copula	6
after bought far imperative		13
after bought far modal	23
after bought far none	7	-8	7	-10
after bought far past						8
after bought here	4	-27	-9	-20	31
after bought here past		-9		-10	15
after bought here run-on	25
after bought sentence	-12				23
after bought sentence and	-17	-26	6		14
after bought sentence comma	-13	-26	6	-31	31
after bought sentence copula	14
after bought sentence none	-10	-31	12	-37	29
after bought sentence past	-21	10		14
after bought sentence present	8
after bow	30	-10
after bowl	21	-10		-7
after box	-17			9
after brass	33	-17		-4
after break	20
after bridge	12
after bring		14
after brown		6
after brush		10
after bubble				7
after build	-5			13
after burn	11
after bury	30			-11
after bust	35
after butt	-5			12
after button	4
after buy	-32	20			5
after buzz	31			-12
after c			12
after came off	-14		22	-9
after can't		10
after carton	-18	10	18
after case	-19		19
after cat	6
after catch	15
after ceiling	8			-16
after cellar	15	-23	7
after center	25
after centre	6
after centres	13
after chair		-14		8
after change	-6			18
after channel	21
after chase		15
after chatter	16		-6
after check	22
after chew			10
after chewed up	10
after clamp	-24	25
after clean	-6
after clinic	9
after clip	4
after clog	8
after closet	24
after cold	26
after column	21		-5
after compact	11
after complete	9	-8		5
after copier	19
after core	-6			15
after corridor	4	-20		7
after counter		-25				17
after course	21
after crook	33			-7
after cross threaded	25
after crosses		7
after crown	18
after crush	14
after ctr	29	-12		-14
after cup	22
after cure	16
after curl	12
after cut out	4
after day	11
after daylight	24		-6
after deck	27
after deep	29	-6
after deliver	-15			-10	8	9
after den	27
after dent	16
after didn't		-6			14
after dig		16
after dime	-10		17
after ding		8
after dining room	10
after dog	6
after dont		11
after doorway	27
after drags	7
after dresser	21
after driveway	7
after dry	11
after drywall	23			-5
after duct	24	-6		-4
after dust	19
after each				24
after early		7	-6
after eat	7
after edge		10
after either	10
after else	-4	21		-15
after empty	16
after enough	25	-16
after entry	21
after even	7
after ever	24	-6
after every	29
after everything	17
after everywhere	25
after exam	5
after extra	-29		16	8
after face	34	-4		-5
after factory	-22	27
after falling	21
after falls	18
after far	-13			21
after feed	6
after feel	9
after feet	-6	13
after fell	-23	15		10
after fell off	-5	11
after figure	18	-16
after fill	13
after finally	14
after find	-6			13
after fine	4
after finish	6
after fire	9
after fireplace				12
after first coat	-13		-12	21
after fit				9
after fix				19
after flash		12		-7
after flat	29
after flip	12
after float	12			-16
after floor	24
after floors	14
after foot	20
after fourth	20
after frame	8
after fray	21
after freeze	18
after front				4
after fronts	30			-19
after frost	-5			12
after full	5
after gable	10
after gap	11
after garage	-6		30	-9
after gas				19
after gears	-8	16
after give	-17			26
after glue				10
after god	18
after good	27
after grade	5
after green	-11			16
after grout	28	-18
after guy				-7
after hair	18
after half			13
after hall closet	25			-9
after hallway	26
after hammer	10
after hand			19
after happen	-8	23		-13
after hard	29
after hasn't		12	-19
after have far comma		8		-6
after have far owed		9
after have far past						15
after have far run-on	6
after have here	14
after have here and	10
after have here comma	19
after have here none	10
after have here past	35
after have here present			12
after have here stop	11
after have here word	21
after have sentence and		13		-12
after have sentence comma	-4	10	5
after have sentence imperative		17
after have sentence modal	-28	38
after have sentence none	-19	17	30	-51
after have sentence owed		13
after have sentence past	46		-35
after have sentence run-on	15
after have sentence word		31
after haven't	-28	19
after he's	21
after heat	28
after here	-8		28
after high	12
after him	14
after his		9
after hit	9
after hole	15			-7
after holes	18			-8
after hollow	28			-6
after home	-33	22	23	-16
after homeowner	7
after hook	25
after hot	-9	-7		19
after how				11
after hub		-13		16
after i'd	28			-8
after if		8
after inch	-11			16
after inside				-5
after inspector	-25	29
after install	-16			32
after instead				-11		12
after into				6
after isn't	12
after its	19
after jam		-6
after job	-18		7
after joint	17
after joist bay	8
after just	11
after kick	12
after kicks out				6
after kid			13
after kill	12
after kind		15
after kink	-17			23
after knock	4
after know	10
after lab	-14	24	-23	-6
after label	14
after lacquer	-7	17		-28
after lag	15
after lane	31			-10
after latch	27
after later	19
after latex	23			-9
after laundry	30			-13
after layers	5
after leak	34
after lean	-14	6		6
after leaning		-12	20	-15
after least	19			-6
after leave			12
after leg	17
after legs				12
after length	24	-7
after let	10
after let go	18			-4
after level	13
after lid	-21	26
after lime	17	-12
after line	12		-10
after list	6	9		-21
after lite		-7	11	-7
after little					13
after live	25
after living room	-11			13
after load	7
after lol	17
after long wall	7
after look	26
after loose			4
after lose	12
after lot	-5		16	-14
after lower			8
after luck	9
after lunch	24			-4
after main	14
after man	-13	19		-9
after mark	20
after mask	33		-18
after mat	21
after match		13
after mate	-10	22	-13	-17
after maybe	15
after measure	13
after meet	8
after mind	30	-18	-18
after mine	-10	21		-8
after minimum	29	-21
after minus				8
after miter	21
after moisture	15
after morning	9
after mount	-13			32
after movers	15
after mrs	9
after mud	24			-14
after mush	-16		-4	21
after my			8
after nail	6
after ne	26			-10
after near	14
after need		9
after need far and	35
after need far copula	14
after need far imperative		6
after need far modal	19
after need far none	14
after need far run-on				6
after need far word	27			-11
after need here comma	-9	25
after need here modal		6
after need here none		31
after need here past	5			-14
after need here start	-15	24
after need sentence and		7
after need sentence comma		35		-20
after need sentence imperative	32	-17
after need sentence modal	5
after need sentence none		60		-19
after need sentence owed	20
after need sentence past	-16		9
after need sentence present		11
after need sentence word	29
after needle	22			-15
after neighbor		14
after next	-12	20
after nice	-22	16		6
after nick	10
after night	7
after no	4
after nobody	31
after none far and				5
after none far owed		14
after none far run-on	36
after none far word	24	-11
after none here copula	11
after none here run-on	6
after none here start	5
after none sentence comma	11
after none sentence imperative		16
after none sentence modal		20
after none sentence stop		-16	-6		17
after noon		-4
after north			7
after north side	19
after notch	-4	14
after nothing	25
after number	35	-18		-15
after nursery	29		-11	-6
after oak	9
after office	-33	6	4	15
after oil	23
after once	10
after one's	6
after ones	-33	34
after opened up		12
after or	31	-8
after order	-27				62
after ought				10
after oughta	15
after our				-17
after out of level	9
after out of plumb	15
after outside	22
after own	7			-6
after owner		14
after paint	21
after painted shut	13
after pairs	27
after pantry	8		10	-23
after paper	5	6		-8
after parking lot	16
after part	6
after pass	23
after past	24
after patch	-14			20
after peel	-7	20
after per	20
after pick	-24	32
after piece				7
after pile		-10	-13	18
after pin	19	-5
after pine	-7			9
after pipe	11
after pitch				12
after plaster		16		-6
after plate		-25		9
after please	-15	31		-28
after plenty	-32	26	16
after plug	10
after plumb	-13	-9		26
after plumber	4
after point	10
after pop	10
after popcorn	-17	-16	26	-12
after porch	15
after pour	21
after powder room	-15		19
after prime	16
after promise	-9	15
after proud	8
after pull	11
after punky	12
after push	30			-5
after put	-7			9
after putty	-15			22
after r	21			-5
after rains	-11	18	-9
after rake	-23	19		7
after rate	23	-19
after rattle	6
after re	19
after reach	-7	-17			21
after ready	10
after real	-12	-12	24	-4
after red	-14		20
after rental	23			-8
after replace	-17			27
after require		7	-7
after rest	-22	13	-5	7
after return	16
after returned far comma		5
after returned far copula	6
after returned far none	-12		16
after returned far owed	-10	16
after returned far past					14
after returned far present	-5		15
after returned far stop	-6		6
after returned here	32
after returned here and	15
after returned here copula	25
after returned here past	23
after returned here start	16
after returned sentence	-25			-6	29
after returned sentence and	-27		-6	-7	24
after returned sentence copula	7
after returned sentence past	-32	-23	-19	-20	36
after returned sentence run-on		9
after ring	6
after rip	12
after rise	9			-18
after rocks		-12
after roll	-20	-16	17	13
after room	4
after rotten	10
after rough	21
after rough opening's	-26			11		20
after round	28
after rusted through	18
after sag	8
after salon				7
after same		-10		11
after sand	37
after saw	16
after scrap	11	-12	10	-19
after scrape	21
after scratch	18	-15
after screed	14
after screen	21	-8
after scribe	24
after seal	6
after seam	8
after second	-17			33
after second coat	12
after see	13
after seize	18
after send	-14	15
after she	-13	4		16
after shed	-35	15	18
after sheet	-18	4		13
after sheets		-7		16
after shim		15
after short		17
after shot	36	-12
after should		5
after shy	17
after signal's		-6		11
after site	-15		27	-30
after skip	25
after slab		11
after slide	15
after small	13
after smell	15
after snap		22
after soft	23
after solid				5
after somebody's	9
after somewhere	6
after soon	-9			14
after sort	25	-6
after sound	18
after spare	-39	-30	39
after spins	22
after spray	34
after square	6				10
after squeak	17
after stack	-7	-13		9
after stain	-9	12
after stand	-10			18
after staple	21
after start	25
after station	-25		15	15
after steps	20
after still			13
after stock	-33		11	6
after stop			10
after store	-5	-24		-9	8	14
after story	9
after straight				-15
after street	27
after stretch	10
after strike	9
after strip	12
after study	-15		21
after stuff		11
after sub	-19	-10	-13	26
after swap				13
after sweat		10
after swing	11
after tacky	-15		21
after tag	-17	26
after talk		-11		12
after tap	26
after tear	4
after tell	-8			22
after template	30
after than	26
after the kid	-14			18
after the kids	26	-9
after the lady	-12				19
after the wrong		7
after the yard		-18	-4		6	13
after their	10	-13	11	-19
after them	5			-7
after then	10
after they're	24
after they've	15
after thick		7
after think	9
after this	8
after those		15
after thread		5
after through	17
after throw	20
after tie	20
after tight	7
after til	14
after tile guy	-5	14
after tiler's	5
after tip	7
after toast	18
after too		11
after too deep	-18	22		-5
after too high	31	-20
after too long	5
after too short	27	-5		-7
after touch	29
after towards	7
after trailer	-26	-33	24
after trim	-29	21		10
after tube	29	-7
after tubes	16		-16	-10
after twice	5
after underneath	13
after unit	29
after units	11
after until	19
after upstairs	17
after us	8
after use				21
after used far and	21	-4
after used far comma				-5
after used far copula	17
after used far imperative		14
after used far owed		6
after used far past		-10
after used far run-on	10
after used here comma		-12		22
after used here none	-15	-34		39
after used here past	27
after used here stop	13
after used sentence and				8
after used sentence comma				12
after used sentence none				29
after used sentence owed		10
after used sentence word		20
after utility	5
after van	-44	-21	53
after vent	22
after very	4
after wait	26	-10
after walk	10
after walls	24
after walnut		12
after wash	6
after waterlog	25
after we	9
after weep	26
after weight		-5	13	-6
after well			5
after wet	26
after whenever	11
after where	24
after whistling	-7			15
after white	-12	29
after whoever	6
after whole	20
after why	5
after width	-20			7		17
after winter	18
after within	25
after without	13
after won't	28
after won't latch	5
after wont	9
after work	23
after would	-12	19
after wouldn't	8
after wrap	-7
after wrong		-13	-9	-11		22
after x	-7
after yellow	6
after yet		14
after you	14
after you'd				6
after your	5
again bought	-15	-14	24		-9
again have		23	-38
again need	63	-67	19	-20
again returned	-15			-16	26
again used			37	-37
ahead #		9		-16
ahead &	-33	27		14
ahead '	26			-4
ahead (	-12
ahead +				4
ahead 1	14
ahead 2	6
ahead 3	-8			15
ahead @	35
ahead above	21
ahead acclimatising	19
ahead across		11
ahead ain't	22
ahead air	18
ahead alarm	18
ahead all				14
ahead almost		-5
ahead along	22
ahead already		-9
ahead am		-8	15	-6
ahead an	-9			7
ahead anchor	-13		19
ahead another					12
ahead any	-17	20
ahead anybody	13
ahead anyhow	5
ahead anything	-14			17
ahead ap	9
ahead apart	6
ahead apartment	6
ahead are				10
ahead around	19
ahead arrive		7		-5
ahead as	29
ahead ask	11
ahead at	6
ahead attic's	10		-12	-9
ahead away	31
ahead b	19
ahead baby	19			-6
ahead backsplash	-5	14
ahead bad	22
ahead ball	23			-7
ahead basement	15
ahead bath	35
ahead bathroom	32
ahead bed	40			-15
ahead bedroom	7
ahead before	11
ahead behind	17
ahead below	16
ahead bend	20
ahead between	38
ahead bill	6
ahead bin		18	-15	-11
ahead black	5			-12
ahead bled	24	-10		-12
ahead block				19
ahead board	-23	26		-14
ahead boards	26
ahead bolt				14
ahead bond	-6	20		-4
ahead bone	15
ahead book	-5		17
ahead both	23			-15
ahead bottom	37
ahead br	8
ahead bracket	20			-7
ahead brass	9
ahead break	-13	22
ahead bring		15
ahead bubble	11
ahead build	24			-10
ahead burn				25
ahead bury	8
ahead button	-5	-10	-7	18
ahead buy		10
ahead c	13
ahead call	11
ahead cap	-14			23
ahead care	22			-9
ahead carpenter		8
ahead catch	7
ahead caulk		14
ahead center	12
ahead chalk	18			-4
ahead change				10
ahead chase	4
ahead chrome	-15	20
ahead chuck		10
ahead clamp				9
ahead client	29	-17
ahead clip	6		-9
ahead close	11
ahead closet			4
ahead code	33	-26
ahead cold	24
ahead cold side's	30		-11
ahead color	23
ahead connect	4	-4
ahead contact	-5		17	-16
ahead could	12	6		-23
ahead couldn't	16
ahead count		-8				5
ahead counter	19
ahead cover	9
ahead crawl	-6			14
ahead crosses		7
ahead crown		-7		-5	13
ahead crumbling				10
ahead crush	17	-8
ahead cure	-4			12
ahead customer	17
ahead cut out	15
ahead d	13
ahead dad	18	-5
ahead damp	26
ahead date	6	13		-28
ahead day	20
ahead dead	19
ahead deck	18
ahead deep	20
ahead den		14
ahead dent	16
ahead dial	27		-14	-19
ahead didn't	-10	12
ahead dig	21
ahead ding	24
ahead dip		13	-6	-8
ahead doesn't	19
ahead dog	15
ahead doubl	7
ahead downstairs	17
ahead drain	19
ahead draw	11			-5
ahead drill	27
ahead drip	20
ahead drive		-6		4
ahead drop	26
ahead dry		5
ahead drywall	10			-7
ahead e		-7
ahead each	34	-30
ahead early		-16		14
ahead ease	26
ahead eat		-14		22
ahead edge				6
ahead eggshell	15
ahead either	30	-15
ahead electric	11
ahead electrician	9
ahead em	35
ahead empty	18
ahead enough	-6	-6	29
ahead ensuite	15
ahead entry	32	-5
ahead even	-8			14
ahead everything		-5		17
ahead except	23
ahead exhaust	12
ahead exterior	22
ahead extra	4	-24	-17			18
ahead face	15
ahead falls	14
ahead falta		11	-12	-12
ahead far		-6				14
ahead feed	27
ahead feel	19
ahead fell	-10	21	-16	-17
ahead fella	14
ahead fence	-9	-17		20
ahead fifth	22			-9
ahead figure		22		-6
ahead fill				17
ahead finally	33	-11
ahead finish				6
ahead fire	13
ahead first	-19	9	14	-13
ahead first coat				9
ahead first fix	5
ahead fish	18
ahead fit				4
ahead fix	10	-21
ahead flap	4
ahead flash	17
ahead flat		8
ahead flip			6
ahead float	6	-8
ahead floor	17
ahead floor's	14
ahead flush	10			-12
ahead foam		-6		23
ahead foil	-19	-7	25	-7
ahead footings	19	-5	-5	-7
ahead forget		12
ahead fourth	15
ahead foyer	12
ahead frame				4
ahead framing's	17
ahead fre	-7	-15	22	-21
ahead fresh	-15		12	4
ahead front		-6		9
ahead front room	11			-5
ahead fronts	21			-12
ahead full		7		-7
ahead gable	20
ahead gal	-23					25
ahead garbage	14
ahead give					9
ahead glue	-11		14
ahead golf	24
ahead gonna		12		-9
ahead good	25
ahead gray		7
ahead green	-4	8	-11
ahead grout	23	-10
ahead guess	-13	21
ahead guest room	9
ahead guy	25
ahead hair	6			-7
ahead half	-30	20	23	-9
ahead hall	24
ahead hall bath			4
ahead hard		-17		9
ahead has	9
ahead haul	12
ahead haven't		17	-9	-12
ahead he	6
ahead he'd	16
ahead he'll			7	-8
ahead he's	7
ahead headroom	14
ahead hear	9
ahead hearth	13	-17	-5
ahead height	26			-11
ahead height's	23			-13
ahead hendersons	17
ahead here			14
ahead him	-12		14	-14
ahead ho		7
ahead hold	4
ahead home	16	-6
ahead homeowner	22
ahead hook		-14		10
ahead hot		8
ahead how		17		-6
ahead hub	12
ahead hum	17
ahead i'd		33	-12	-16
ahead i've			17
ahead inch	-23	29
ahead inside	31
ahead inspector	27
ahead install				11
ahead instead	17			-13
ahead insulate	22
ahead into	5
ahead it'll	-7		12	-15
ahead itself	26
ahead jacket	9
ahead job	-8	-14		25
ahead joint	-7			5
ahead joker	27			-23
ahead kick	16
ahead kids	9
ahead kill	12
ahead kit				6
ahead knees	10
ahead knock	23
ahead la	12
ahead ladder	-13			14
ahead lady	12
ahead lag		4	-6
ahead lake						13
ahead land	16
ahead laser	20	-16
ahead last	-8		7	9
ahead latch	30	-4
ahead laundry	34
ahead laundry room	8
ahead lay				4
ahead layers	6
ahead lead	16
ahead leak	6
ahead lean	21
ahead leaning	6
ahead least		5
ahead left hand	12
ahead leg	11
ahead let go	29		-5
ahead library	-6			15
ahead lid	-8			15
ahead lid's	12
ahead lift	25
ahead line				11
ahead linen closet	-11			9
ahead listen	7
ahead little	30			-23
ahead living room	29
ahead load	7
ahead lock			16
ahead lol	7
ahead long		15
ahead longer		12
ahead look	18
ahead loop	21
ahead loose	9
ahead lose	6
ahead lot		-15				8
ahead low				11
ahead lower	10
ahead luis	32		-13	-17
ahead machine	28	-16
ahead main	17
ahead man	6
ahead mark	11
ahead master	15
ahead match	5
ahead mate	-28	33	-5	-10
ahead maybe	-14		31	-11
ahead me		19
ahead measure	7
ahead meet	20
ahead middle		11		-7
ahead mind	19
ahead miss		22
ahead mix				10
ahead moisture	19
ahead moisture's	23
ahead mold	4
ahead morning	14
ahead mount	-8		-6	21
ahead mud	19	-6
ahead mudroom	8
ahead must	11
ahead n	4
ahead nah	18
ahead nail				8
ahead nail holes				9
ahead near	23
ahead need		18
ahead never	9
ahead new	-13
ahead next	27	-22
ahead nick	23
ahead nobody	4
ahead north wall	7
ahead notch	15
ahead nowhere		10		-11
ahead number	18			-10
ahead nursery		-20	-7	19
ahead oak	-5			13
ahead office	10
ahead oil	21
ahead okafor	6
ahead okafor's	-10			16
ahead old	26
ahead once	17
ahead one's	45
ahead ones	41
ahead only			5
ahead opened up	23
ahead opening's					10
ahead or		-11	18	-10
ahead order		20
ahead other			17
ahead out of plumb	22
ahead outside	23
ahead outta	30	-4
ahead owe	-6	11		-5	12
ahead own	27			-8
ahead owner	7
ahead paint			5
ahead painter	12
ahead pantry				8
ahead paper	-19	22
ahead part	21	-11		-9
ahead patio	30			-7
ahead peel	16
ahead phone	9
ahead pick					13
ahead piece	23
ahead pile	-5	-7	16	-10
ahead pin	-25	-14	9	16
ahead pipe		-9		6
ahead pitch	17
ahead place	-7			15
ahead plan	18
ahead plane	16
ahead plaster		14
ahead plate	7
ahead please			4
ahead plenty			15
ahead plumb	22			-10
ahead plumber	-10	11
ahead plus	-18	13	10	-8
ahead pool	7
ahead pop	12
ahead pour	12	-5
ahead powder room	24
ahead prime	21
ahead pull	22
ahead push	18
ahead put				9
ahead quick	32
ahead quit	13
ahead quote	23
ahead r	-12	24		-16
ahead rain						19
ahead rake	34	-26
ahead rate	13			-5
ahead read	24
ahead rebuild	-16			24
ahead redo				-11
ahead rehang				10
ahead relay				10
ahead remind	12
ahead rental	15
ahead replace				13
ahead reset	15
ahead rest	-43	5	23			5
ahead restroom	22
ahead return	-19			-23		30
ahead reveal	18
ahead ridge	22	-13
ahead right	14
ahead rm	7
ahead rod		18		-18
ahead roll			5
ahead roof	18
ahead room	20
ahead rotten		16		-13
ahead round	36
ahead row	24		-12	-15
ahead run's	36			-7
ahead rust	9
ahead s	17
ahead sand	12
ahead scrap	15
ahead scrape	25
ahead scratch			15
ahead screed	19
ahead screen	7
ahead screwdriver	21
ahead scribe		12
ahead scuff	18
ahead seal	6
ahead seam	6
ahead seat	18
ahead second	-8		5	4
ahead second coat			4	-7
ahead send	-16					24
ahead sewing room	-15	-5		19
ahead shave	22
ahead she	13
ahead she'll	17
ahead she's	24
ahead sheath		11		-7
ahead shed		-6		12
ahead sheet	17
ahead shim	11
ahead ship	13	-5	6	-23
ahead shoot	-7		18	-13
ahead short	-10	44
ahead shot	27			-8
ahead shove	-12	-15	23	-25
ahead show	12
ahead shut	23
ahead shy	-21	29	-8
ahead side	9
ahead sign	-7		16
ahead silicone	7
ahead size	23
ahead skim	7
ahead skirt				8
ahead slab	27
ahead slab's	10
ahead slide	9
ahead slip	9
ahead slope	21
ahead snake	27
ahead snap	23
ahead snug	25			-17
ahead soft						12
ahead solid				11
ahead some	12		5	-31
ahead somebody		4
ahead somebody's	29
ahead sound	36	-17		-9
ahead spare	-14		25	-6
ahead special	17
ahead spins	5		6	-10
ahead splash	24			-4
ahead splice	28
ahead spot	12
ahead spray	18
ahead stack	-11	-32	11	21
ahead stagger	-6	-6		13
ahead stain	29
ahead stair		6
ahead stairs	-20			27
ahead stand	7
ahead staple		13		-26
ahead start	4
ahead static	17
ahead stay	12
ahead steam	-14			20
ahead steps	20			-10
ahead store	-35		-29	-37	32
ahead strap	-13		8
ahead street	11	-16			17
ahead strike	-5	15		-5
ahead stuff	-18	19
ahead super	24
ahead supplier	-12	7	14
ahead supply		6		-6
ahead supposed	-5	18
ahead swap				5
ahead sweep	25	-18		-6
ahead sweet	19
ahead swing		14		-5
ahead system	12
ahead t	7
ahead tack	11
ahead tag				6
ahead take						13
ahead talk	14
ahead tall	25
ahead tank	4
ahead tank's	19
ahead tap	17
ahead tape	4
ahead temp	25
ahead template	7
ahead tenant	11
ahead test	9
ahead text	8
ahead than	23
ahead the lab	8
ahead the lady	-12		13
ahead the wrong	5
ahead the yard	10
ahead their			10
ahead them				-13
ahead then	20
ahead they	27
ahead they're	26
ahead they've						5
ahead thick			-4
ahead thing		-10
ahead things	17
ahead third		-16		8
ahead this						4
ahead though	-9	-5		-6	11	18
ahead through				12
ahead throw					10
ahead tie	10	-6
ahead tight	16
ahead tighten	12
ahead tile guy		13
ahead time	-23		11	12
ahead together		-12
ahead too	18
ahead touch	7
ahead toward	17
ahead trace	9
ahead trim	17
ahead trip	26	-13
ahead truck	7		5
ahead try			8
ahead tube	-15			20
ahead turn				7
ahead u	11
ahead underneath	12
ahead unit	10
ahead upper				7
ahead upstairs	16
ahead us		16
ahead use				14
ahead van	-21	-17	32	-26
ahead vent	-14			13
ahead wacker	13
ahead wait	6
ahead walk				-5	16
ahead wall's	19
ahead walls	35
ahead wash	21			-11
ahead waste	10
ahead water's	4
ahead wax	-6	25		-10
ahead we'd	-23	27
ahead we'll		22
ahead weep	10
ahead weigh	-21		-9	17
ahead weld	-8	-17	19	-8
ahead well		7
ahead were	41			-13
ahead wet	17
ahead what's	-11	5	8
ahead when	5
ahead where	7
ahead white		7
ahead who	28
ahead who's	8
ahead whoever	16
ahead why	20
ahead wide	18
ahead will		17
ahead wipe	20
ahead wire	20
ahead within	23	-5
ahead without	-25	19	15
ahead wont	17
ahead work	22
ahead wouldn't	5
ahead wrong	27
ahead wrote	19
ahead x		13
ahead you	28
ahead you're		17	-6	-6
ahead your	11
any	176	-79	-145	-70	-289	-310
area after none sentence				7
area beside nothing		-21	-11	21
area cue need	-22	26
area cue used	-7			18
area flawed	21	-7
area left #	-24	-15	-13	46
area left about	48	-5		-37
area named before material		7	-8
area named before word	-14	-20	-6	28
area null none no		-16		17
area right #	-9			15
area says none no		-16		17
area says past before		-5	-15	15
area says past behind		-18	-4	16
area sold so false	7		-8
area verb null no		-16		17
area whole clause	-28	-14		39
bare after bought far	38
bare after bought sentence	27
bare after have far	11
bare after have here	21
bare after need here	15
bare after need sentence	7
bare after returned here	13
bare after returned sentence	9
bare after used here	15
bare after used sentence	16
bare beside add	25
bare beside am	9
bare beside are	29
bare beside bag	-16			20
bare beside bead				8
bare beside bend	4
bare beside blow	16
bare beside bolt				13
bare beside box	28
bare beside break		10
bare beside bring		11
bare beside bubble	11
bare beside buy	42	-35
bare beside buy b nobody	9
bare beside buy b other	29	-21
bare beside can	5
bare beside can't	12
bare beside cap	-12			18
bare beside clear	17
bare beside ding	6
bare beside don't	17
bare beside drop	6
bare beside dry	6
bare beside eat	27
bare beside fill				7
bare beside finish	10
bare beside fix	18
bare beside flash	16
bare beside forget	27	-7
bare beside fre	26
bare beside get	9
bare beside give	16
bare beside go	7
bare beside gotta	6
bare beside grind	20
bare beside guess	26	-20
bare beside hang	33
bare beside has	17
bare beside have	18
bare beside have b nobody	41		-12
bare beside have b person	5
bare beside have pp person	6
bare beside head	12
bare beside i'll	6
bare beside is	10
bare beside know			13
bare beside lay	39
bare beside leave	19
bare beside let	4
bare beside level				12
bare beside like	5
bare beside lose	7
bare beside lower	10
bare beside match	5
bare beside measure	8
bare beside measure b other		8
bare beside measure bp other	8
bare beside measure bpp nobody				7
bare beside measure bpp person				15
bare beside measure i person	5
bare beside measure pp person	21
bare beside meet	10
bare beside miss	15
bare beside move	10
bare beside move i nobody	18
bare beside move p other	30
bare beside move p person	26			-8
bare beside move pp nobody	17
bare beside move pp other	15
bare beside move pp person	4
bare beside move s other	21
bare beside need	6
bare beside need b nobody	18	-5
bare beside need b other	17	-29
bare beside need s nobody	-5	12
bare beside notch	15
bare beside oil	18
bare beside open	15
bare beside order		21
bare beside other b nobody	5
bare beside other b person	16
bare beside other bpp nobody	6
bare beside other i nobody	10
bare beside other i person	5
bare beside other p nobody	21
bare beside other p other	10
bare beside other pp other	20
bare beside other pp person	20
bare beside other s other	8
bare beside other s person	9
bare beside owe		10
bare beside own	10
bare beside pack		6
bare beside paint				5
bare beside pass				6
bare beside patch	15
bare beside pick	26
bare beside pitch	4
bare beside place	23
bare beside plane	11
bare beside plug	-14			25
bare beside pop	18
bare beside pour	-4	12
bare beside prime	7
bare beside pull	12
bare beside put	7
bare beside quote	11
bare beside redo	17
bare beside return	-29		14			23
bare beside rip			7
bare beside roll	6
bare beside say	7
bare beside say b nobody	12
bare beside say b person	29	-5
bare beside say pp person	6
bare beside say s person	20
bare beside scratch	-9		17
bare beside screw	38			-10
bare beside scribe	-10	17
bare beside seal				5
bare beside see b other	-5			13
bare beside see b person	12
bare beside send	10
bare beside shave	14
bare beside show	10
bare beside shut	7
bare beside sister		-14		17
bare beside skim	5
bare beside snap	13
bare beside spray	7
bare beside stack	35			-20
bare beside stand	8
bare beside start	4
bare beside stay	12
bare beside stick	18
bare beside stop	-7	14
bare beside strip	14
bare beside stuff	7			-12
bare beside supply	-11	16
bare beside swap	31
bare beside tack	10
bare beside take						7
bare beside tape	26
bare beside think	16
bare beside throw	35	-16
bare beside tie	8
bare beside turn	13
bare beside undefined has other	15
bare beside undefined has person	13
bare beside undefined is nobody	22
bare beside undefined is other	16
bare beside undefined is person	18
bare beside undefined will other	27
bare beside undefined will person	8
bare beside use	24			-9
bare beside use b other	8
bare beside use pp nobody	14			-8
bare beside use pp person	8
bare beside wait	13
bare beside walk	23
bare beside want	8
bare beside wash	12
bare beside will	15
bare beside wipe	8
bare beside won't	11
bare beside wont	17
bare beside work	14
bare beside work bp nobody	15
bare beside work bpp nobody	20
bare beside work bpp person	14
bare beside work i nobody	8
bare beside work i other	13
bare beside work i person	12
bare beside work p nobody	44			-7
bare beside work pp nobody	8
bare beside work pp person	23
bare beside work s other	6
bare beside wouldn't	5
bare beside wrap	27
bare buy imperative behind		10
bare buy owed before	-19	27
bare buy past behind	49	-24			-20
bare have imperative behind	12
bare have present before	8
bare left #	5
bare left &	-13	10
bare left (	12	-26		-8	18
bare left )	4
bare left +		-21		7
bare left -	28
bare left /	20
bare left @	9
bare left Q	9
bare left T	26
bare left a	18
bare left about	27
bare left above	9
bare left after	14
bare left all	30			-10
bare left along	5
bare left already	29	-8
bare left and	23
bare left around	8
bare left attic	15
bare left back						12
bare left bath	12
bare left be	27
bare left bedroom	5
bare left before	17
bare left behind	7
bare left below	7
bare left bend	12
bare left break	29	-6
bare left buy	35	-28
bare left c	18
bare left can't	12
bare left caulk	16
bare left clean	13
bare left clear	8
bare left closet	14
bare left come	-9				17
bare left crack	6
bare left dead	7
bare left do	37
bare left don't	8
bare left drop	7
bare left each	7
bare left em		9
bare left enough	13
bare left every				8
bare left except	5
bare left fill	9
bare left find		9
bare left finish	18
bare left fit				14
bare left for	32
bare left garage				9
bare left get			6
bare left glue	17
bare left go		7
bare left hall	8
bare left hang	21
bare left has	23
bare left have	31
bare left he	8
bare left hit	11
bare left how	12
bare left i	14
bare left i'll	6
bare left if	7
bare left is	5
bare left it	27
bare left it's	6
bare left job	-10			15
bare left just	20
bare left keep	4
bare left last				7
bare left lay	34	-5		-15
bare left leave	13
bare left like	10
bare left make	14
bare left measure	11
bare left meet	10
bare left miss	20	-4
bare left move	6
bare left near	5
bare left need	25	-12
bare left nobody	8
bare left not	14
bare left on	16
bare left once	8
bare left only	33
bare left open	13
bare left opened up	8
bare left or	20
bare left order	-7	22
bare left out	7
bare left outta	24
bare left paint	10
bare left pantry	18
bare left pass				9
bare left patch	10
bare left pick	10
bare left plane	5
bare left pop	7
bare left powder room	7
bare left pull	16
bare left replace	4
bare left right	-17	21
bare left roll	6
bare left round	7
bare left screw	23
bare left scribe	9
bare left seal	9
bare left send	26
bare left shut	10
bare left since	4
bare left sit		11
bare left snap	13
bare left split	12
bare left start	10
bare left stick	23
bare left swap	17
bare left take				-10		25
bare left test	7
bare left than	4
bare left that	19
bare left the	29
bare left the wrong	9
bare left them	10
bare left then	11
bare left there	18
bare left there's	14
bare left through	38			-14
bare left time	25
bare left to	9
bare left too	18
bare left top		10
bare left toward	6
bare left trim	14
bare left turn	12
bare left under	6
bare left until	17
bare left use	44			-37
bare left we	13
bare left when	10
bare left which	5
bare left why	13
bare left will	10
bare left without		6
bare left won't	10
bare left wouldn't	5
bare left your	14
bare list have	20
bare list need	-6	12
bare measure imperative behind					15
bare measure modal before	4
bare measure modal behind	-5	15
bare measure owed before	9
bare measure owed behind	9
bare measure past before			9
bare move modal before	5
bare move owed before			9
bare move past behind	31
bare move present before	27
bare move present behind	19
bare named here area	5
bare named here defect	26
bare named here fixture	19
bare named here role	5
bare named here surface	7
bare named here word	19
bare named here work	23
bare nameless	30
bare need modal before	28	-11
bare need owed before	29
bare need owed behind	9
bare need past before		10
bare need past behind	14
bare need present behind	39	-22
bare null copula before	13
bare null imperative behind	16
bare null modal before	27
bare null none no	9
bare null owed before	10
bare null owed behind	15
bare other copula before	6
bare other copula behind	5
bare other imperative behind	12
bare other modal behind	10
bare other owed behind	27
bare other past before	4
bare other present behind	5
bare right &	-22	31		-7
bare right '	5
bare right (	24
bare right +	7			-21
bare right /		-16	9	-5
bare right @	41
bare right Q	44
bare right T	33
bare right a	21
bare right across	11
bare right all	5
bare right along	17
bare right already			16
bare right another	15
bare right are	10
bare right aren't		9
bare right around				-8
bare right arrive	24
bare right as	18
bare right back	17
bare right behind	31
bare right blow	7
bare right bolt	15
bare right both	10
bare right box	21
bare right break	5
bare right bring	20
bare right burn	7
bare right can	20
bare right can't	11
bare right caulk	7
bare right change	26			-12
bare right clean	8
bare right clear	10
bare right crush	11
bare right cut	29			-7
bare right didn't	5
bare right do		5
bare right don't			9
bare right down	49
bare right drill	7
bare right drip	9
bare right drop	5
bare right dry	7
bare right dump	10
bare right every	23
bare right fine	11
bare right finish	11
bare right fix	-6			11
bare right flash	12
bare right for			5
bare right glue	49			-37
bare right go	28
bare right gonna	4
bare right grout	5
bare right hasn't	-9	15
bare right have	19
bare right head		-8		9
bare right her	6
bare right here	-7		23
bare right him	6
bare right hold	28
bare right if	8
bare right inside	-14	18
bare right is	9
bare right isn't	5
bare right it	16
bare right it's	12
bare right just	16
bare right lay	12
bare right leave	11		-12
bare right lift	12
bare right make	6
bare right me	17
bare right mount	7
bare right move	6
bare right my	19	-7
bare right need	12
bare right never				14
bare right next		14
bare right of	25
bare right off	25
bare right only	13
bare right open	5
bare right order	45				-18
bare right out	19
bare right over	29
bare right pack	-10	18
bare right peel	-12	20
bare right pitch	8
bare right place	5
bare right pull	10
bare right read	9
bare right replace				8
bare right return	10
bare right right	9
bare right rip	6
bare right roll	-17	-7	23	-13
bare right run	13
bare right say	7
bare right screw	16
bare right set	11
bare right short	38	-13
bare right shot	8
bare right since	5
bare right sit	20
bare right snap	28	-7
bare right so	9
bare right some	10
bare right somebody	5
bare right stand	18
bare right stay	11
bare right still			12
bare right stretch	19
bare right strip	20
bare right stuff	14
bare right swap	5
bare right take	18
bare right test	10
bare right than	17
bare right the	24
bare right them	6
bare right there	-5	13
bare right they	16
bare right those	11
bare right til	13
bare right till	21
bare right to	16
bare right too				6
bare right top	14
bare right toward	9
bare right trip	4
bare right turn	13
bare right under	30
bare right up	31
bare right use	26			-18
bare right want	10
bare right were	30
bare right when	20
bare right will	14
bare right wire	18
bare right without	8
bare right wobble	8
bare right wont	6
bare right you	11
bare say imperative behind	28
bare say past before	27
bare say past behind	14
bare say present before	15
bare says copula before	7
bare says copula before not	9
bare says copula behind	10
bare says imperative before	5
bare says imperative behind	4
bare says imperative behind not	18
bare says modal before	31
bare says modal before not	8
bare says modal behind	6
bare says none no	8
bare says none no not	19
bare says owed before not	7
bare says owed behind	9
bare says past before not	12		-9
bare says present before	12
bare says present before not	10
bare says present behind	12
bare see imperative behind	7
bare see modal behind				11
bare see owed behind	5
bare see past behind	-5		14
bare then buy b	-12	-20			44
bare then buy pp	31				-10
bare then have pp	17
bare then measure b	17
bare then measure i	40
bare then measure pp			8
bare then measure s	13
bare then move i	8
bare then move p	16
bare then move pp	13
bare then move s	9
bare then need b	28
bare then need pp	7
bare then need s	6
bare then other p	7
bare then return s	10
bare then say pp				11
bare then say s	13
bare then see b	12
bare then undefined will	18
bare then use pp	26			-18
bare then work bpp	18
bare then work i	21
bare then work pp	15
bare then work s	8
bare use past before	20			-13
bare use past behind			13
bare use present behind	20			-13
bare verb add behind	22
bare verb arrive before	30
bare verb ask behind	9
bare verb be before	6
bare verb be behind	5
bare verb bend behind	8
bare verb blow before	10
bare verb blow behind	13
bare verb box behind	24
bare verb bring behind		13
bare verb buy behind	8
bare verb buzz before	8
bare verb call behind	11
bare verb can behind	24
bare verb cap behind	28			-10
bare verb catch before	7
bare verb caulk before	7
bare verb caulk behind	17
bare verb change before				8
bare verb change behind	6
bare verb clean before	9
bare verb clean behind	19
bare verb clear behind	7
bare verb close behind	12
bare verb crack before	-18	13		9
bare verb crack behind	8
bare verb dig behind	7
bare verb do before	9
bare verb don't before	21
bare verb drain before	11
bare verb drill before	10
bare verb drill behind	5
bare verb drip before	4
bare verb drop behind	6
bare verb dry before	-10		21
bare verb dump before	23
bare verb ease behind	11
bare verb end behind	15
bare verb finish before	5
bare verb fit behind				10
bare verb fix before				9
bare verb flush before	9
bare verb flush behind	12
bare verb forget behind	17
bare verb frame before	10
bare verb frame behind	12
bare verb fray before	14
bare verb fre behind	26
bare verb get before	22
bare verb get behind	10
bare verb give behind	14
bare verb glue before	38			-19
bare verb glue behind	29
bare verb go behind	11
bare verb grind behind	19
bare verb grout before	12
bare verb guess behind	27	-19
bare verb hang before				14
bare verb hang behind	25
bare verb have before	8
bare verb have behind	4
bare verb hold before	12
bare verb i'll behind	17
bare verb keep before			5
bare verb keep behind	10
bare verb know behind			15
bare verb lay before	20	-20
bare verb lay behind	45			-12
bare verb leave behind	9
bare verb let behind	8
bare verb level behind	-6			16
bare verb lift before	16
bare verb like behind	20
bare verb listen behind	7
bare verb make before	12
bare verb measure before	4
bare verb measure behind	8
bare verb miss before	16
bare verb miss behind	22	-4
bare verb move before	7
bare verb move behind	7
bare verb mud before	8
bare verb nail behind	12
bare verb need behind	11
bare verb notch behind	12
bare verb null before	13
bare verb null behind	4
bare verb null no	9
bare verb open behind	19
bare verb order before		15			-9
bare verb order behind		17
bare verb pack behind		7
bare verb paint before	12
bare verb paint behind				7
bare verb patch behind	22
bare verb pick behind	19
bare verb plane behind	11
bare verb plug before	8
bare verb plug behind				17
bare verb pour behind	-10	16
bare verb prime behind	8
bare verb pull behind	4
bare verb put behind	12
bare verb rattle before	6
bare verb read before	13
bare verb redo behind	22
bare verb remind behind	12
bare verb replace before				6
bare verb reset behind	5
bare verb rip behind			9
bare verb roll behind	8
bare verb run before	16
bare verb sand behind	10
bare verb say before	14
bare verb screw before	-7			18
bare verb screw behind	35
bare verb scribe before	20
bare verb scribe behind	17
bare verb seal before	14
bare verb seal behind				6
bare verb seat before	5
bare verb send before	-12	18
bare verb send behind	8
bare verb shim before	18
bare verb show before	-14		17			8
bare verb show behind	12
bare verb silicone before	16
bare verb silicone behind	15
bare verb sister behind	-14	-8		29
bare verb sit before	5
bare verb slide behind	5
bare verb snap before	29	-10
bare verb split behind				10
bare verb squeak before	7
bare verb stain behind	16
bare verb stand before	24
bare verb stand behind	8
bare verb start before	5
bare verb start behind	4
bare verb stick behind	9
bare verb stop behind	31
bare verb strip before	13
bare verb strip behind	6
bare verb supposed before	6
bare verb swap behind	31
bare verb tack behind	10
bare verb take before	31
bare verb take behind						27
bare verb talk behind	4
bare verb tape before			12
bare verb tape behind	27
bare verb tell before	11
bare verb tell behind	14
bare verb text behind	7
bare verb think behind	6
bare verb throw behind	26
bare verb tie before	13
bare verb touch behind	4
bare verb trim before	12
bare verb trim behind	15
bare verb trip before	17
bare verb turn before	10
bare verb turn behind	5
bare verb use before	22			-11
bare verb use behind			9	-7
bare verb want before	15
bare verb want behind	6
bare verb wash behind	12
bare verb wire before	15
bare verb wobble before	7
bare verb work before	5
bare verb wrap behind	21
bare whole clause	6
bare work imperative before	5
bare work imperative behind	11
bare work modal before	25
bare work modal behind	21
bare work owed before	15
bare work past before	18
bare work present before	15
bare work present behind	5
beside add				5
beside add Q	-15			22
beside add b nobody	15			-18
beside add b other		6
beside am	9
beside am is person	9
beside are Q	23
beside are all	-9		18
beside are in				13
beside are on	-15			24
beside arrive		7		-5
beside arrive pp other	-12	10	7	-7
beside bag b other	-16			20
beside be G	15
beside be Q	5
beside be a	-13		15	-10
beside be b person	-4	19		-4
beside be back	-19	25		-9
beside be p other	22
beside bead	-6	5
beside bead b other	-6	5
beside bend	23
beside blow	17
beside blow Q		-10		9
beside blow p person	6	-13	-9
beside bolt	-21	-13		31
beside bolt pp other	-22	-12		29
beside box b other			11
beside box in	-16	-10	21	-7
beside break	-16	23
beside break p other	-9	17
beside break the	18
beside bring		16
beside bring Q	-8	24
beside bring b nobody	-5	19
beside bring b other	-13	29
beside bring b person	10
beside bring i other	26	-19
beside bring me	-24	32
beside bubble	11
beside burn	-13			36
beside burn Q	-20	-12		28
beside burn pp person	-23			35
beside burn through	-13			25
beside bury	8
beside bury pp other	5
beside buy G	22	-15
beside buy Q		4			6
beside buy a	-19			-16	6	17
beside buy b nobody		20
beside buy b other	20
beside buy b person		15
beside buy i person	-24	31
beside buy pp nobody	-38	-45	-26	-30	64
beside buy pp person	-37	-44		-20	47
beside call	26
beside call b other	15
beside call for	26
beside call him	23	-14		-9
beside call i person	14
beside call it		12		-11
beside call s other	23
beside can will other	-5	-16		17
beside can will person	9
beside can't	12
beside can't will person	8
beside cap	-28			32
beside change	-5			15
beside change b nobody		10		-20
beside change b person	-13			17
beside change pp other		-14	12
beside change the	-8	-18	-5	26
beside check	20
beside check b other	9
beside chip	11
beside chip on	6
beside chip pp other	11
beside clean b other		6
beside clean b person	13
beside clean pp person	19			-6
beside clean the	6
beside clear the	9
beside close	8
beside close b person	26
beside come Q	8	-11	-9
beside come T		-20		-5	22
beside come back		8
beside come bp other	7
beside come bp person	14
beside come down			-16	8
beside come i other	6
beside come i person	12
beside come in	18
beside come out					12
beside come p nobody		-25	-8	-16	19
beside come p other			7
beside come s other		-16		-6	20
beside come the	-14				20
beside come up	36	-10
beside come with	16
beside count	25	-11
beside cover	34			-5
beside crack	14
beside crack b other	11
beside crack pp other	5
beside crush	17	-8
beside crush pp other	17	-8
beside cut a	-6			13
beside cut bpp person	7
beside cut in				14
beside cut that	15
beside cut the	28
beside dig	21
beside dig Q	13
beside dig pp other	13
beside ding	20
beside ding pp person	14
beside ding the	14
beside do Q		-15	-12	16
beside do a		5
beside do b other				-7	16
beside do b person			8
beside do it	-19			16
beside do p nobody		-5	-5	15
beside do p other	18
beside do p person	8	-8
beside do that	-6		7
beside do the					15
beside don't	20
beside don't will other	9
beside doubl	23			-15
beside doubl pp other	23			-15
beside drill	21			-4
beside drill Q	22			-10
beside drip	21
beside drip i other	6
beside drip on	16
beside drive				15
beside drive Q	-5	-5		16
beside drive p person	-5	-5		16
beside drop			7
beside dry	6
beside dump				5
beside dump i other	-5			14
beside ease	20
beside eat		-15		23
beside eat Q	-33	-23	-19	40
beside eat i other	18
beside eat my	14
beside eat p other	-12	-21	-15	35
beside empty	14
beside feed	30			-8
beside feel	14
beside feel b person	16
beside feel it	10
beside figure		26		-18
beside figure Q	-6	30	-6	-20
beside figure b nobody	-29	32
beside fill				25
beside fill pp other	-7	-10		21
beside fill the	19
beside fill with	-9	-11		19
beside find	9
beside find a	22
beside find pp nobody	9
beside find pp person	10
beside find the		11
beside finish b other	15
beside finish pp other				5
beside finish pp person	16
beside finish to	19
beside fish	18
beside fit				4
beside fit Q	13	-11
beside flash	21			-7
beside flip			17	-5
beside flush	26			-5
beside forget	-7	14
beside frame	16
beside frame pp other	12
beside fre	26
beside get Q			15
beside get about		-10	8	-8
beside get b nobody		42
beside get b other		13		-18	6
beside get i other	-5	14	-5	-4
beside get i person		10	-17
beside get its				15
beside get maybe	-11		16
beside get me	-7	23
beside get no	-21	22			5
beside get p nobody	-16	-33	35	-14	9
beside get p person			26
beside get s person	-6	17	-8	-5
beside get that	22	-17	-8
beside get the			8
beside get to	9
beside give		-5			13
beside give me	-8			-6	19
beside give p person		-19	-5	-9	21
beside glue				11
beside glue pp other				4
beside glue pp person	-7	-5		15
beside go Q		-29	-15	22
beside go b other	21
beside go back	-6			4
beside go down	15	-8
beside go i other	23
beside go in	12
beside go off	24			-14
beside go on	-5	18		-6
beside go p nobody		-8		27
beside go p other				13
beside go p person				9
beside go through	-15			47
beside go up				10
beside gonna	6
beside gonna will person	5
beside gotta	11
beside gotta will nobody	17
beside grab					5
beside grab Q	-18	10		-14	23
beside grab a	-7	18
beside grab me	15
beside grind				4
beside grind pp other	-12			17
beside guess	-5	12
beside hang Q	-13			26
beside hang b nobody		6		-12
beside hang b other		9		-4
beside hang b person				11
beside hang by	26			-8
beside hang on	-15	11		6
beside hang pp nobody	-8			12
beside hang pp other	7
beside hang pp person	-12			22
beside hang s other	14	-12	10	-24
beside has Q	8		-25	-19
beside has a			11
beside has has person		-13	13
beside has no	18
beside have Q			27
beside have b nobody			42
beside have b other	11
beside have b person			52
beside have no	14
beside have pp nobody	25		-13
beside have pp other	13		-9
beside have pp person			-9	21
beside have to	14
beside hear	5
beside hit a	4
beside hit bpp person				10
beside hold Q	23
beside hold a	6
beside hold i other	5
beside hold pp person	6
beside hold s other						14
beside i'll	13
beside i'll G	18
beside i'll will nobody	14
beside install				13
beside is Q	8
beside is a		-15	11
beside is all	12
beside is already	22
beside is at	7
beside is down	12
beside is in	15
beside is is person	4
beside is no	7
beside is on	15
beside is only	10
beside keep	8
beside kill	12
beside knock	22
beside knock pp person	18		-9	-4
beside know			10	-9
beside know b other	-7		17
beside land	11
beside lay				14
beside lay down	-7			14
beside lay i other	25			-7
beside lay in	4	13	-11	-26
beside lay pp person	-13			22
beside lay the	26			-12
beside leak	9
beside leak b other	11
beside leave G	22
beside leave Q	-17	-21	42	-27
beside leave a	11
beside leave b nobody	13
beside leave b person	7
beside leave i nobody	-5	16
beside leave in	5
beside leave it	-11	18
beside leave me	-28		28	-20
beside leave of	14
beside leave on	20
beside leave over	19		-7
beside leave pp nobody			10	-5
beside leave pp other	8
beside leave s other	-14		17	-10
beside leave side	10
beside leave the	14
beside let bpp nobody	6
beside lift	16
beside like Q	4
beside like a	10
beside like b person	13
beside like the	11
beside look	9
beside lose	6
beside lose b person	9
beside lose pp other	22
beside lower	10
beside lower b other	10
beside make Q	28	-19
beside make a	7
beside make b nobody				-5
beside make b other	11
beside make b person	-5	17
beside make it	-16	21
beside make pp person	31	-5		-11
beside mark	16			-5
beside match	5
beside match b other	8
beside measure	7
beside measure Q	16
beside measure b nobody		12
beside measure b other		4
beside measure bp other	7
beside measure bp person	14
beside measure bpp other	4
beside measure bpp person				10
beside measure i other	20
beside measure i person	18
beside measure p nobody		-25	-8	-16	19
beside measure p other			7
beside measure s other	6
beside meet	21
beside miss		19
beside miss Q		23		-5
beside miss a	37	-21
beside miss at	12
beside miss i other		5
beside miss i person		10
beside miss the	34
beside mix	-7		-4	17
beside mix Q	-8	-16	-10	24
beside mount	-10		-9	22
beside mount pp other	23			-5
beside move			10
beside move Q	23	-6
beside move b other	30
beside move b person			4
beside move i nobody		14
beside move i other	24
beside move i person	-18	-21	30	-5
beside move it	7
beside move p nobody		-8		27
beside move p other				13
beside move p person				9
beside move pp nobody			8
beside move the			11
beside nail	-9	-5		23
beside nail pp nobody		-7		6
beside need		21
beside need G		6
beside need Q		12
beside need a		14
beside need an		5
beside need another	-25	27
beside need b nobody		35
beside need b other		18
beside need b person		17
beside need more		13
beside need pp other		9
beside need pp person	30	-13
beside need s nobody	7
beside need s other	4
beside need s person		6
beside need the	-13		28	-11
beside need to	22	-5
beside nick	24
beside nick pp other	16
beside nick pp person	14
beside nick the	16
beside notch	15
beside oil	21
beside open b other	14
beside open b person				9
beside open the	17
beside order	-4	18
beside order G	10	-23			26
beside order N		7
beside order Q	-6	31
beside order a		-6			14
beside order b nobody		10
beside order b person	-5	11
beside order i person	-35	36
beside order pp nobody	-16	-22	-7	-16	34
beside order pp person		-23	-4		21
beside order the	-12	19
beside other b nobody		33
beside other bpp nobody	6
beside other bpp other	11
beside other i nobody	-11	23
beside other i person	8
beside other p nobody		-30	16	-5
beside other p person			12
beside other pp nobody	-46	-29		-40	44	14
beside other pp other	15
beside other pp person		-19				14
beside other s nobody	29	-6		-9
beside other s other	14
beside owe	-10	16	-9	-14	15
beside owe b person	-6			-11	18
beside owe the	9
beside own	23			-8
beside pack		6
beside pack b nobody	-17	21
beside pack it	-5	16		-21
beside pack pp person		-12		11
beside pack with				5
beside paint pp other	12
beside paint the	-11			15
beside pass				6
beside pass pp person	16
beside pass the				6
beside patch		7		-7
beside patch b nobody	-11	18
beside peel	18
beside pick				-9	16
beside pick G	5
beside pick b nobody		13
beside pick pp nobody	-24	-27	-10	-12	40
beside pick pp person		-23		-7	23
beside pick up				-17	30
beside pin	-25	-14	9	16
beside pitch	4
beside place	-15			20
beside place b other	11
beside plane	16
beside plane the	13
beside plug				13
beside plug pp person				7
beside plug the				7
beside plumb	22			-10
beside point	19
beside point Q	19
beside point b other	17
beside pop	23
beside pop the	9
beside pour Q		-7	-7	19
beside pour pp other	10		-5
beside prime	14
beside prime b person	13
beside prime pp other	7
beside pull	5
beside pull Q	-11			19
beside pull out	13
beside pull pp nobody	23
beside pull pp person				11
beside pull the	9
beside put				20
beside put G	-26	16		17
beside put Q				9
beside put a		5
beside put bpp nobody				26
beside put bpp other	-9	5
beside put bpp person				15
beside put i person		29		-28
beside put in	-15			29
beside put it	-41		13	32
beside put new	-22	-31		35
beside put on	-31	-11		35
beside put that	20
beside put the	29
beside quit	14
beside quit bpp other	12
beside quote	23
beside rate				-8
beside rate Q				-8
beside read	16
beside read Q	16
beside read bpp other	17
beside read i other	14	-5
beside rebuild	-16			24
beside redo	17
beside redo b nobody	13
beside relay				11
beside relay Q	-16			20
beside relay pp other	30			-18
beside replace				15
beside replace Q		-10	-11	4
beside replace pp nobody	-25			35
beside replace the	-4			13
beside return	-21			-25		32
beside return Q		-23	-30	-17		21
beside return b nobody	7	18	-28	-23		-45
beside rip b other	24	-8
beside rip b person	-8		15
beside rip pp other	4
beside rip pp person	-5			13
beside rod	32			-19
beside rod pp nobody	21
beside roll	20
beside roll b other	7
beside roll b person	22
beside roll the	8
beside run G	14
beside run Q	-15	-5		39
beside run a		4
beside run bp nobody		11
beside run bp person	-8	8
beside run i other	24
beside run it	16
beside run out	38
beside run p nobody		-12		16
beside run p other	22			-15
beside run p person				13
beside run s person	5
beside run the	24			-5
beside rust	10
beside rust b other	10
beside sand				-10
beside say Q	24
beside say b other	9
beside say i person		8
beside say pp other	17
beside say pp person	26
beside say s person	-8	21
beside scrape	18
beside scratch			15
beside screw	-7			22
beside screw pp nobody	-25			29
beside screw pp other	17	-8
beside scribe	-6	18
beside scribe pp person	7
beside scribe the	9
beside seal b person	7
beside seal pp nobody	16
beside seal pp person	-6			12
beside seal the	17
beside see b nobody	21
beside see b other				16
beside see b person	16
beside see it	11
beside send	-31					28
beside send Q	-40	14		-14		20
beside send b person	20
beside send pp other	-21	-13	14			18
beside send pp person	-10	-9	6	-5		14
beside send the	16
beside set Q		-16	-21	10
beside set a		-4		7
beside set bpp nobody	37			-26
beside set bpp other				5
beside set bpp person		-8		8
beside set it				12
beside set the	7
beside shave	14
beside shave the	14
beside shim	19			-9
beside shim pp person	19			-12
beside ship	9	-7	9	-21
beside show	14
beside shut	24
beside shut the	10
beside sign	-17		23
beside sign pp person	15
beside sister Q	18			-23
beside sister a	-23			30
beside sister pp person		-5		16
beside sit Q	15
beside sit b other		11
beside sit flat	-16	21		-6
beside sit i other	14
beside sit i person	9
beside sit in	11
beside sit on	19
beside sit pp other			11
beside size	15
beside skim	8
beside skim pp nobody	9
beside slide	9
beside slide b person	9
beside snake	28
beside snap	21
beside snug	24			-18
beside split bpp other	27
beside split bpp person				10
beside split the	11
beside spray	16
beside stack	-11			22
beside stain	5	6		-18
beside stand	10
beside start	6
beside stay	12
beside stick				5
beside stick a	-10	-5		16
beside stop	-8	18
beside stop b other	-18	22
beside strip			5
beside strip b other	-9		18
beside strip pp other	9
beside stuff	-18	19
beside stuff b nobody	-9	7	4
beside supply		9		-8
beside swap	-12			18
beside swap b nobody		21		-19
beside swap b other	11
beside swap pp other	-23	-17		28
beside swap pp person	-13	-20		31
beside swap that	16
beside swap the	5	-13
beside swing		15		-7
beside swing b person	-9	19		-11
beside swing by	-11	20		-14
beside tack	10
beside take						8
beside take Q	-6			19
beside take a	39			-7
beside take b nobody	9	-14
beside take b other	-14	22		-13
beside take b person		-8
beside take me	12	-9	-11
beside take out	34	-7		-23
beside take p nobody	-18		-21	-25		35
beside take p other		-13	-6	20
beside take p person	-18	-5		-7		26
beside take s other	4
beside take the			-4	-16		28
beside tear	5
beside tear p other	6
beside tell b nobody		13
beside tell pp person	8
beside test	11
beside test Q	7
beside text	10
beside think			8
beside think b person			14
beside throw		5
beside throw a	-24	16		10
beside throw b nobody		22
beside throw p person	-18	-7		32
beside tie				5
beside tie pp other	13
beside tie pp person		-10		13
beside tighten	27			-17
beside tighten the	21			-13
beside tile	21
beside top G	28	-8		-25
beside top b nobody	11
beside touch	7
beside trip	26	-18
beside try			10
beside try b nobody	-12		18
beside try pp person	34
beside turn				5
beside turn b nobody	24
beside turn b other	-11	-16		19
beside undefined has person		-13	13
beside undefined is person	12
beside undefined will nobody	4
beside undefined will other				5
beside undefined will person	13
beside use				23
beside use Q				16
beside use a	-5			17
beside use about			-12	19
beside use b other	13
beside use b person	-7	4
beside use pp nobody				19
beside use pp other		-5		34
beside use pp person				33
beside use the	10
beside use up	-33			40
beside wait	6
beside wait on		11
beside walk		-8		-7	17
beside want Q		13
beside want another	12	-5
beside want b nobody	24	-7
beside want b other	19
beside want b person		23
beside want it	22	-14
beside want pp person	30	-13
beside want s nobody	7
beside want s person	7
beside want the	30	-15
beside want water	17	-6
beside wash	21			-11
beside weigh	-21		-9	17
beside were	29			-13
beside were is other	29			-15
beside will		5
beside will will person		4
beside wipe	16
beside wipe the	16
beside won't	11
beside won't will other	12
beside wont	17
beside work	26
beside work bp nobody		11
beside work bp person	-8	8
beside work bpp nobody				13
beside work bpp person				8
beside work i nobody	19
beside work i other	23
beside work i person			5	-14
beside work p nobody		-10		14
beside work p other	25
beside work p person		-5		10
beside work pp nobody				20
beside work pp person				4
beside work s nobody	20
beside work s other	13
beside work s person	22
beside wouldn't	5
beside wouldn't will other	5
beside wrap pp nobody	18
beside wrap pp other			14	-10
beside wrap with			14	-11
bound about			15
bound atMost	12
bound over	30
bound under	13	-9
code	-48			38
count after bought far	-10		7	-20		11
count after bought here	20
count after bought sentence	-43	-29	28		14
count after have far	6
count after have here	-13	10	10	-16
count after have sentence	-11	35		-14
count after need far				-4
count after need here		27
count after need sentence	-7	33		-12
count after returned far	-12			4	9
count after returned sentence	-35	4	-16	-22	32
count after used far	-9	14
count after used here		-6
count after used sentence	-17
count beside are	-29			31
count beside be	30
count beside blow	33			-16
count beside box	-10	-14	20	-12
count beside bring	-14	12				10
count beside buy	-10	12			6
count beside buy pp nobody	-41				43
count beside call	40	-10		-6
count beside change	-32	-22		32
count beside come	-23	-11	4	6	7
count beside cut	-8
count beside do	8			-19
count beside give	-8		-5	-16	22
count beside go				11
count beside grab	10	-8		-10	10
count beside hang	-28			34
count beside has		6	-36	7
count beside have		-17	20
count beside have b nobody	-17	-17	35	-14
count beside have b other	6
count beside have b person	-6	-11	34	-7
count beside have pp other	25		-18	-19
count beside have pp person	-24	-17	-7	26
count beside hit				11
count beside hold	-20			11		20
count beside is	6
count beside leave	-26	-26	41	-27
count beside like				-9
count beside make	-7	12		-11
count beside measure p other	-31	-11	17	19
count beside measure s other	6					7
count beside miss		24		-5
count beside mount	-19		-18	26
count beside move	-7	-26	20
count beside move b other	32	-5		-18
count beside move p other		-6		12
count beside move pp other	-27	10	25	-22
count beside move s other	-33	16	15
count beside nail		-9	-7	10
count beside need		26
count beside need b nobody		16
count beside need b other	-20	33
count beside need b person	-10	41
count beside need s nobody	16	-5
count beside need s other	15	-11		-11
count beside need s person	7
count beside order		7			15
count beside other b nobody	-7	47
count beside other b other		11		-7
count beside other b person		26		-31
count beside other i other	15			-26
count beside other i person		7
count beside other p nobody	-27	-21	32	-28		18
count beside other p other		-6
count beside other p person		-28	-10	7
count beside other pp nobody	-45	-5	-27	-28	22	25
count beside other pp other	11	-13	5	-5
count beside other pp person	-14	-33	-29	-14	7	28
count beside other s other	15	-12	-5
count beside pick	-16	13		-21	13
count beside point	21
count beside pull	34			-28
count beside put	-12	-24	-6	36
count beside rate				-8
count beside read	29
count beside replace	-15	-15	-10	24
count beside return	13	-18	-22	-11		6
count beside rip	-7			13
count beside roll	18
count beside run				13
count beside sand				-12
count beside say b other	34	-19		-5
count beside say pp person	23	-7
count beside send	-53	6		-21	-7	35
count beside set	4	-7	-17	4
count beside sister	15	14		-34
count beside stick	-14			6
count beside swap	-26	7		20
count beside take	-11	-17	-20	7		27
count beside throw	-24	18	-15	6
count beside top	15			-7
count beside turn	26
count beside undefined has other		6	-36	7
count beside undefined is other				6
count beside use				16
count beside use pp nobody			-4	18
count beside use pp person	-7			21
count beside want	13
count beside work b nobody	-5	14
count beside work b other		9		-21
count beside work b person	-15			5
count beside work bpp nobody	-13		-12	25
count beside work bpp other				6
count beside work bpp person		-14		12
count beside work i other	7		-7
count beside work p nobody		-11		11
count beside work pp nobody	-17			48
count beside work pp other	11
count beside work pp person		-15		20
count beside work s other	17			-13
count buy imperative behind		7
count buy past behind	-27	-31	-14	-18	46
count cue ate	-8	-18				26
count cue back	-13			-14		55
count cue bought	-31		-31	-20	38	7
count cue came	-28		13			16
count cue have	-13		80
count cue lacks	-30	21
count cue need		50
count cue used	-17			51
count flawed	39
count have present before	10
count have present behind	-11		27
count kept	-17		50	-19
count left #	-23			15
count left (	-27		-6	15		11
count left +	-40	14		21
count left G				6
count left N	29	-8		-13
count left Q	-6		13	-5
count left T	-10	9	13	-27
count left about		-16	15	-7
count left all		-14		26
count left and	-10	22
count left are	24			-14
count left at	60
count left back	-9	-15	-17	-27		26
count left be	44
count left bed	21
count left between	29	-18
count left bring		12
count left buy	-42	37			6
count left by	14	9		-34
count left change		-8		14
count left cut	-17	20		-6
count left down	-25	-5	-8	33
count left drive	-15	-9		23
count left for	17	12		-27
count left from	10			-13
count left get	-4		8
count left go	4	-22		4
count left grab				-9	16
count left hang	-23	-13		32
count left has		12	-21	-23
count left have		-14	15
count left i'm	15	-6		-6
count left in	5	-23		10
count left is	37
count left it				-4
count left it's		7		-24
count left last	19	-12	-5
count left maybe		-24	26	-19
count left me	-17	11		-6	10
count left miss		20		-5
count left need		25
count left now		-14		13
count left of	17		-16	-24		4
count left on	-7		-8	31
count left only	-7	-28	31	-37
count left order	-49	46
count left other	12	-11	5	-12
count left out				8
count left over	21
count left past	23	-5
count left point	18
count left pull	13	-28	-11	-38		20
count left put		-12		5
count left rate				-8
count left read	29
count left replace		-10	-11	4
count left return	8	-15	-21	-5		8
count left run	14	-9
count left say	33
count left set		-8	-21	8
count left short	-38	47		-10
count left take	-42	-15	-32	38		12
count left that's	-29	7		11		6
count left the		-13	12
count left then	25			-16
count left there's	-22	-43	36
count left those	19	-22
count left through	9		-6
count left throw	-24	18	-15	6
count left to		-28	24
count left under	21
count left up	-58	5		20	15
count left use	-16			41
count left want	6
count left we're	13		-12	-8
count left with	-34			27	12
count list need	-26	40	-16	-45		9
count measure past behind	-7	-11	-7	-12	20
count measure present before	17		-6	-27
count measure present behind	24
count more	-29	41		-14
count move imperative behind	29	-11		-7
count move past before	-13		50	-10
count move past behind	-16		10
count name flawed	-14
count named before area	31	-29		-13
count named before surface	20
count named before tool	21			-10
count named before word	24	-8		-8
count named here area	-21	18	-6	8
count named here defect		-14	10	-7
count named here finish		17		-17
count named here material	-61	7		42
count named here part	-90	24		23
count named here surface	48			-10
count named here tool	-31	40	-13
count named here word	-25
count nameless	37			-10
count need modal behind	-34	25
count need owed before		9		-18
count need owed behind		15
count need past behind	4			-6
count need present behind	-15	31		-16
count not ahead		34	-28	-27
count null copula before		9	-9
count null modal behind		18	-15
count null none no	-7
count null owed behind	7	5
count other imperative behind	-25	66
count other modal before	15		-5	-11
count other modal behind	19			-15
count other owed behind	-18	16	8	-15
count other past before			-18	-25		21
count other past behind	-12	-37				21
count other present before	28		-5	-6
count other present behind	-7	31		-14
count pointing	-28			32
count right (		16	-13	-18
count right +	-7			7
count right @	-29	22	-17	9
count right Q		12
count right a	-7	4
count right above	17
count right already	12	-23	9	-28
count right are	-14	-10		20
count right be	13	-10
count right before			6
count right bend	24			-18
count right break	5
count right by	4	12		-27
count right come	17	-21		-43		13
count right crack	4	-11				10
count right do	24			-14
count right don't				6
count right down	-14		-14	15
count right each	-9	-25	-10	20
count right for	-31	5	5
count right from	-12		13	5
count right get	20	-20		-26
count right go		-18	-10
count right has	42			-22
count right in	-16	-29	30	8
count right is	5	-22
count right leave	-9		42	-13
count right miss	17		-20	-33
count right more		15		-5
count right need		15		-17
count right no	-22	32	-9	-6
count right now	33			-5
count right of	-27	28		-5
count right off	12	-14
count right on		-17		16
count right out	-29	-30	-34	46
count right over	-18	-18	20	-25		16
count right run	-9	20		-27
count right short		19	-14	-32
count right still			13	-17
count right strip		-7
count right the	-12	22
count right through	-9	-12		20
count right to				-19		18
count right up	-34		-18	49
count right were	-15		-7	-5		31
count right when			17	-7
count right which	22
count right with	35			-20
count say imperative behind		-19		12
count say past behind	28	-8
count say present behind	-14	7	15
count says copula behind not				-15
count says imperative behind		38
count says imperative behind not		10		-9
count says modal before	-10		-16	11
count says modal before not	-5	17		-11
count says modal behind		15		-4
count says modal behind not	19		-21
count says none no	-7
count says none no not	5			-10
count says owed before		8		-16
count says owed behind		13
count says past before	-6			5
count says past behind		-9		10
count says past behind not	20		-34
count says present before		14
count says present behind	-12		9
count says present behind not	-27	28	-26	6
count sized	-51	34
count sold so false		9	-25
count sold so true		5	-4
count then have b	-7		5	-20		11
count then have pp		7	-12
count then measure b	-23	-15	-21	33
count then measure i	-35		14	11
count then measure p	-16	-30	8			27
count then move b	10		14	-38
count then move p	-8	-25	-12	22
count then move pp	-14		48	-17
count then move s	-13	-6		9		16
count then need b	7			-16
count then need pp	-39	35	5	-21
count then other b	9
count then other i	30		-17	-37
count then other p		-8		-7		16
count then other pp		-15				14
count then other s	8			-11
count then undefined has	31			-24
count then undefined is		-10		8
count then undefined will	-10	19		-4
count then work b		5		-21
count then work bpp		-21		18
count then work i	-5		28	-24
count then work pp		-10		7
count then work s	-17	15	-24	17
count use past behind				9
count verb bring behind	-20	13				10
count verb buy behind	-12	24
count verb call behind		-17		6
count verb change behind	-44	-21		37
count verb come behind		-7	-7	-15	18
count verb crack before	11	-12
count verb cut behind	23	-12
count verb do behind	29	-17		-14
count verb finish behind	39	-21		-19
count verb get before	-7	21	-17	-26
count verb get behind	-14	15
count verb give behind	-6			-14	22
count verb go behind		4	-5	4
count verb grab behind	10	-8		-7	9
count verb hang behind	-24	-7		34
count verb have before	10
count verb have behind	-9		23
count verb i'll behind	-8	25		-18
count verb leave before	-28		51
count verb leave behind		-12	18	-25
count verb make behind	-6		-7	11
count verb miss behind	-27	30
count verb move behind	-10		10
count verb nail behind		-9	-7	10
count verb need before		20		-15
count verb need behind		31
count verb null before		9	-9
count verb null no	-7
count verb order behind		7			15
count verb pick behind	-19	18		-20	11
count verb prime behind	27			-18
count verb pull behind	42	-5		-34
count verb put behind			-24	13
count verb read behind	9
count verb replace behind	-12	-11	-5	22
count verb run behind	-18			20
count verb sand behind			6	-10
count verb say behind	-4	4
count verb send behind	-18		-33	-23		34
count verb shim behind	23
count verb should behind	-8	-14		19
count verb sister behind	15	14		-34
count verb strap behind	-26		13	15
count verb strip before	7	-9
count verb swap behind	-10		-13	12
count verb take behind	-33	-20		6		31
count verb throw behind	-24	18	-15	6
count verb tighten behind	9
count whole clause	-21			32
count work modal before	-18	27	-4	-17
count work modal behind				-29
count work owed behind	21			-13
count work past before		-15		34
count work past behind				34
count work present before	-29	13	10	4
count work present behind	-10	-13	7	17
counter appliances	7
counter landscape	14
cue ate				9
cue bought	-13	-7			56
cue came			11
cue have			7
cue need		32
first N	-9	21
first air	7
first an	-25	29
first anchor	9	13	-12	-8
first another	12			-17
first any	33
first anything	-6			17
first apt	15
first backsplash	9
first bath	16
first bedroom	10
first black	26
first block	35
first bolt	-8	5
first bone	5
first both				9
first bottom	22
first bowl	20
first bracket	23
first brass	30	-6		-17
first cap	27
first catch	18
first caulk	36	-14
first ceiling	11
first chase	5
first circuit	7
first clamp			10
first clear	25
first clip	6			-10
first coat	19
first code				9
first coffee	19
first corner	16
first counter	24
first crown	18
first cust	26	-13
first daylight	18
first drain	16
first drill	31
first drop	17
first drywall	38
first due	14
first edge	17
first eggshell	-31	13				25
first electrical	-6				17
first enough	6
first epoxy		-19		25
first exhaust	13
first fall	7
first fence	10
first first coat	8
first flash	-10		21	-10
first flat	5
first floor	15
first foam	4
first frame	-14	11
first front	24
first gap	8
first gas	18
first glue	31
first gray	-10	17
first green	17
first grout	25
first hearth	22
first hello	19
first her	36
first hinge	10
first his	25
first hole	6
first hook	9
first hot	19
first island	14
first joint	14
first lag				12
first latch	23
first left hand	18
first lift	23
first line	22
first lock	27
first lol	10
first long	10
first main	12
first maple	22
first morning	10
first mud	43	-9		-9
first my	38
first nah	13
first new	-49			53
first nickel	6
first no	15
first oak	-15			20
first old	37
first ones		-10
first open	20
first our	-12	-7	21
first pack					9
first paint	42
first permit	13
first plaster	24
first plate	-30			33
first plenty	-6		19
first plug	29
first pump	23
first quiet	21
first rear	25			-9
first red	28
first rh	18	-10
first rigid	-16			27
first ring	23
first sand	28
first screed	11
first screen	27
first screw	-11	9
first seam	19
first second coat	12
first shim	-18	23
first shingle	17
first sign	9
first silicone	-10			18
first skirt	25
first slab	12
first slope	5
first some	-8	14
first sorry	17
first splice	18
first stainless	23
first stair	11
first stairs	11
first staple		-7	8
first static	14
first step	16
first strap	-6			14
first strike	29
first suite				10
first tank	10
first tap	11
first tape			8
first temp	23
first the	18
first their	27
first third	5
first those	25
first tile	12
first trim	26
first truck	5
first vent	-10	21
first wall	17
first walls	17
first walnut	15
first waste	-11			18
first water	11
first white	54	-31
first wire	27	-6
first yellow	5
first zone	27
gap  have	34		-10
gap  have past	37		-24
gap  need	49	-10
gap  need imperative	39	-30
gap  need modal	6			-13
gap  need none	27	-15
gap  need owed	26	-15
gap  need present	18
gap  none imperative	-18			15
gap  none none	-20	16	13	-16
gap  none owed	-8	13
gap  none past	20	5		-24
gap  none present	12
gap  used	12
gap  used copula				4
gap  used past	17		18	-40
gap & need	-15	21
gap + need	-20	43		-10
gap + need imperative	-6	16		-12
gap + need owed	-6	41
gap + none	27			-11
gap + used	-34	-16	-7	45
gap + used none	-41	-18	-17	47
gap + used past				6
gap , and need	-4	19	-7	-9
gap , and need none	-4	19	-7	-9
gap , bought	-22	-28		-34	34
gap , bought none	-25	-29		-35	35
gap , have		-24	29	-33
gap , have none		-24	30	-33
gap , need	-4	50		-9
gap , need none		48		-4
gap , none copula				12
gap , none past	-4			13
gap , so none	27	-23
gap , used	-15	-35		42
gap , used none		-41	-10	47
gap , used past	-5		8		10
gap . have		13		-13
gap . have none			9	-6
gap . need copula	31
gap . need past	-9	-9	18
gap . need present	14
gap . need used		13
gap . need used owed		13
gap . none copula	-8		5
gap . none none	8	-21
gap . none past	15	7		-36
gap . none present	13
gap . used copula	-20	17
gap . used none		-27				12
gap . used past	9			-7
gap . used present	25	-9
gap : none	-5	-24	-19		21
gap about none	30	-12	-9	-6
gap above none	8
gap and bought	-23	-26	-15	-24	37
gap and have	-29	-43	56	-28
gap and have past		-5	10
gap and have present	-28	-20	39	-9
gap and need	-27	84
gap and need copula		17	-6	-10
gap and need imperative	-5	24
gap and need modal	-23	46		-9
gap and need none	-38	63		-23
gap and need owed		19
gap and need past	-17	28		-21
gap and need present	-12	33	-7
gap and none	18
gap and none copula	49
gap and none imperative	13
gap and none none			-6
gap and none owed	-14	26
gap and none past	36			-16
gap and none present	13
gap and there's none		7	-14	-12	16
gap and there's none copula		7	-14	-12	16
gap and there's used			16	-6
gap and there's used copula			16	-6
gap and used	-19	-25		67
gap and used copula	-16			40
gap and used none	-13	-28	-18	27
gap and used past				34
gap and used present		-13		20
gap at need	22	-16
gap by need	24	-9
gap by none copula	12
gap far bought copula	6
gap far bought imperative	-19	29
gap far bought none		-13	30	-22
gap far bought past						8
gap far bought present	15
gap far have copula	5
gap far have imperative		18
gap far have modal	-13	21
gap far have owed	-9	30
gap far have past						12
gap far have present	19
gap far need modal	19
gap far need none	7
gap far need owed		18
gap far none imperative		29
gap far none modal		15
gap far returned					19
gap far returned copula	8
gap far returned modal		7
gap far returned none	21
gap far returned owed	-22	28
gap far returned past	-28	-17	-11	-13	41
gap far returned present	-13		15
gap far used copula	21
gap for need	34	-14
gap for none	20
gap have none present			9
gap i got none	-13	14	7	-19
gap i got none past	-13	14	7	-19
gap i put none				4
gap i put none past				4
gap in have	30
gap in have copula	17
gap in have past	14
gap in need	34	-26
gap in none	14
gap in none none	27			-9
gap in none past	10
gap in used	8
gap in, used	24		-14	-29
gap is none	16
gap left have	24		-15
gap left in have	8
gap left on have	19		-4
gap left. have	16	-19	-13	15
gap line need			22	-7
gap line need none			15	-10
gap line need past	-7		19
gap line none	41			-13
gap line none none	29	-10
gap line none past	29			-5
gap line used		10
gap line used none		12
gap near bought		-24			8
gap near bought none	19
gap near bought past			-10	14	-6
gap near have		22
gap near have copula		15
gap near have imperative		5
gap near have modal		19		-6
gap near have none		26	-5	-21
gap near have past			-15	-21	7
gap near need copula	6
gap near need modal	5
gap near need none		23		-20
gap near need owed	28
gap near need past	-13		17	-9
gap near need present		5
gap near none imperative	5
gap near none modal		14
gap near none owed	8
gap near none past				10
gap near used imperative		6
gap near used owed	-10	8	10	-10
gap near. bought	23
gap near. bought none	20
gap near. have				-5
gap near. have imperative	18					-4
gap near. have none		10		-32		11
gap near. have owed	22	-18
gap near. have past	5
gap near. have present	14
gap near. need copula	13
gap near. need imperative	-11			7
gap near. need modal	14
gap near. need none	26
gap near. need owed		7
gap near. need past						13
gap near. need present			5
gap near. none imperative	12	-4
gap near. none modal	7
gap near. none none				-5
gap near. none owed		14
gap near. returned	-24	6	21
gap near. used copula	22
gap near. used imperative	8			-6
gap near. used none			16	-5
gap near. used owed	-7	11
gap of need	44	-41
gap of need owed	34	-30
gap of none copula				8
gap of none past				4
gap of those and need		14	-7	-4
gap of used	26			-21
gap off used	19		-4	-15
gap on have	9
gap on have none	9
gap on need	25	-9
gap on need imperative	20	-12
gap on none past	7
gap on used past	22			-8
gap on. used	-12	6	-8	7
gap over none	9
gap plus need	-30	40	-16	-31
gap so none copula		-13		15
gap so none none	-17	20	-22
gap so none owed	16
gap the need	33	-6
gap there's used	-20		28	-11
gap there's used copula	-20		28	-11
gap through none	30			-24
gap through none past	11
gap to none	16
gap to none copula	12
gap to none past	5
gap under none	11
gap up, used				5
gap up, used none		-5		7
gap w/ none			-7
gap with none				18
gap with none past	-30			33
gap with used	-13			22
goods false false	11
goods false true	9
group eachOf	4	-25	-11	10
group range	33	-5		-5
head 1	-35	16	15
head 2 x	10
head 2x4	5	-10	7	-10
head 5	19
head abs	9
head absent	34	-9		-20
head abt	26
head ac	10
head acrylic	-26	18	-5	5
head adhesive	-21	-23	15	4
head aff	25
head air	26
head amps	22	-5		-6
head anchor	-18			27
head anchors	-21	5	7
head anti tip bracket		4
head anything	21
head apart	-5	-26	-13	20
head architraves	30		-6
head arm	7			-15
head away	16
head back	-14	-13		-19		46
head baffles	26			-5
head bags	-26	18	20	-27
head ball	14
head ball valve	-18	23
head baluster		-18	15
head balusters	6	-26		11
head baseboard	7	5		-14
head basket	-26	16	15
head bath fan	22
head batt	20	-26		6
head batteries	-8			15
head battery	-5			8
head batts	-9	14		-17
head bead	14	-17	10	-24
head beadboard	10			-18
head beam				14
head beam's				12
head bearing	10
head belt	-27	17		24
head belt's	5	6	-7	-23
head belts	22			-12
head bench	22
head better	19	-8
head bit	38			-20
head bits	18
head blade	-10		12
head bled	9
head blinds				12
head block		5
head blocking	33
head blocks	-25		7	6
head blue tape		15		-7
head board			-9	14
head boards	-19	-18		31
head bolt	-21	-22	-5	31
head bolts		7
head bond	-7	13
head bonding primer		6
head bone	11
head boot	24			-7
head boots	32		-24	-29
head boss	24
head bottom	18
head bowl	12
head bowls	-7	-12		15
head box	-16	5		9
head boxes		-14		-32		18
head boy	23
head bracket's	6	-23	10	-19
head brackets	-17			20
head brads			-26		18
head braided lines		-5	14
head brass	-8	18		-18
head breaker				14
head breakers	-31		-15		16	21
head brick	-27		17	13
head bricks				9
head brother	19
head bucket	-17			20
head buffet		12
head built in	17
head bulb	17			-24
head bumpers	-18	13		7
head butt joints	9
head button	8
head cab	5	-11	14
head cabinet	10
head cabinets		-32	23
head cable	-16			30
head cam		-10	7
head camera	16
head can lights		-11		10
head cap	-7	19
head capacitor's		-15
head car charger's			-12	7
head carcasses	16	-24	-10
head card	23	-12
head carpet	36			-13
head cartridge	5		7		-14
head case	29		-5
head casing	13
head cat6	-8			19
head caulk		-5	13
head ceiling	34
head ceiling tile		-24	12	-31	4
head ceiling white	8	5	-17	-13
head cellulose				4
head cement	10
head center	26	-12
head centers	21	-5		-10
head centres	24	-5		-16
head chair rail	33			-22
head chairs		16		-27
head charge	17
head chime	12
head chimney		13
head chimney's	34	-5		-6
head circuit	21
head cistern				11
head clamp				7
head clamps	-29	22
head clear	23
head cleat		6		-7
head cleats	14
head clip	-12	5		12
head clips	-36	29		6
head close	13
head closer	-12	14
head closet		-6	14	-7
head closet bolts		8	-22
head closet doors	35	-15	-19	-8
head closet rod	16
head coat	35	-13
head coat hooks		-15		12
head code	23	-6
head coffee	-23	30	-16	-20
head coil	40			-16
head cold	20
head color	30	-9	-14
head come	22
head compressor	7
head condenser	8	-13	-18	8
head conduit strap	28
head copper				12
head cord		9
head corner bead	13
head corners	32			-8
head countertop	17
head couplings			-5	18
head course	20
head cove base	35	-21	-8	-24
head cricket	28	-4
head crown	9
head crown's	24
head curb	18
head curb's	15
head cut	-8			12
head cut out	10
head cutout	7
head damper's	33	-23		-18
head daylight	18
head dead	5
head deck mud	18	-4	-22
head deck screws	-13	13	-13
head deep	44			-5
head desk	5
head difference	10
head dime	9
head dimmer				-5
head dirt	23		-20
head discs	-41		17	25
head dishwasher	13
head disposal	17
head dog	4
head door sweep	-28	15	18	-12
head doornail	7
head doors	14
head downspout				15
head drain	21			-11
head drain's	-13	19
head drawer front		14
head drawer slides			-7	-18		15
head drawers	11
head drawing	8
head drill	21
head drip edge	24	-7		-7
head drop	40
head drops	18	-7
head drywall				4
head drywall's	-6		6
head due	17
head dumpster	27			-11
head duplex	18
head edge	27
head edges	20
head eggshell	-30	33
head either	15
head elastomeric	12			-14
head elbow	-30	44
head elbows	-25		7	14
head electrical	31	-20	-13	-15
head em	22
head enamel	-28		20
head end	15
head end caps	-22	10		11
head end panel	11
head enough		-11	11
head epoxy	-12			14
head everywhere	12
head except	17
head expansion tank	-7	25		-11
head face frame	8
head face frames	26			-11
head factory	13
head fall		7
head falls	24
head fan	40			-26
head fascia	18			-17
head faucet				17
head faucet's				9
head fault	28	-18
head fell off	12
head fella	21
head fence	18
head filter	-16			10
head filters	-7			16
head final	4
head fine	19
head finish nails		19		-16
head fire caulk		31	-24	-31
head first		16		-20
head flame sensor	30			-15
head flange	30
head flapper		-11	-8	30
head flashing	32
head flashing tape	-22		-11	16
head flex	-16	16
head flight	10
head float	7
head float switch			6
head floor	9
head floor's	5
head florist	7
head flow	19
head flue	22			-4
head foam	-8			9
head folks	19		-5
head footings	11
head four by four	-11	18		-19
head frames		-14	17
head fridge	23
head front door	8
head front door's				7
head front edge	10
head full	-16	25
head furnace			11
head furnace filter	-14		7
head gable	8
head gap	31
head gaps	9
head gas	24
head gasket	-18	11		11
head gate	39
head gauge		12
head get	14
head gfci	15
head gfi	15
head glass	21	-6
head glass doors	-23	-14	9	16
head glue's			11	-21
head go	17
head good	29			-6
head grade	6
head gravel	18		-12
head gravel's				12
head gray		-17		9
head grid	-5	-11		15
head grille	18
head grinder	20
head grout	23	-17
head grout's	10
head guillotine	29	-17		-7
head gutter	10	-26	-10	7
head gutters		-17		16
head guy	31
head guy's	-4	11		-8
head hair	35			-12
head hall	-20	-27	-23	13		21
head handles		-10		-30		12
head handrail	38			-8
head handrail brackets	15	-7		-18	8
head handrail's	19
head hang	21
head hanger		-19	-8	14
head hangers	18			-26
head hardware		-12	17
head header	30
head headroom	5
head hearth			8
head heat mat's	28	-5		-13
head heat pump	27
head heater			16
head height	16
head height's		11	-9	-19
head hello	8
head herself	14
head hidden clips	-5		5		6
head high	46	-6		-14
head hinges				-6	19
head hip	17
head hiya	22
head hole	43
head holes	37
head hood	27
head hook	25
head hooks		-32	-6	5
head hose bib	15
head hoses	-13			8
head hot mud	24			-9
head house	16
head humidity	13
head insp	21			-6
head instead		-24			17
head insulation	8	-18			17
head itself	18
head jack	32			-12
head jacket	17			-4
head jamb	22
head jefe	15
head job	14
head joint		13
head joints	14
head joist	52	-11	-31
head joist tape	-21			23
head keeper	8			-4
head key	22
head keys	27	-18		-4
head kick	-14		-5	20
head kit	-41	38	15	-6
head kitchen				10
head kitchen faucet				8
head kits	-47	25	33	-13
head knees	4
head knife	-9	20		-15
head knobs	-8	-16	19
head lads	10
head lady	23
head lags	-11	8	-6	7
head lamp	25
head landing	18
head latch	25
head lav	6
head lead	20
head led	-4	-17	-5	22
head ledger	28
head left hand	-23	27
head leg	31
head level	8			-10
head lid	-27	24
head lid's	9
head lift	23
head light	24
head light switch		-19	21	-18
head lights	29			-7
head line set	26
head lines	28			-7
head lineset		10		-17
head lip	16
head list	19
head living room	14	-25	-17	4
head lockbox	25
head locks	6	-8	14	-25
head lol	19
head long	18
head loop	22	-10
head loose	37
head low	37
head luis	13
head lvl		19		-20
head machine	28	-9
head maglock	21			-14
head mailbox	8
head main	9
head man	12
head manifold	30	-21		-16
head maple	19
head marble	35	-5		-17
head marco	17
head mastic	-9			13
head max				-7
head maybe	-8	-15	22
head meantime	18
head membrane	8	-21		9
head mesh			-6	18
head meter	16
head microwave	13
head mind	16
head mini split	25
head mirror	6
head mirror's		8
head mirrors	5	-16
head mix	-18	10		6
head mixer	-15	-10	22
head morning	19
head mortar	-13	17
head mortar's	-14	-16	31	-17
head motor					13
head mud	-10	24		-7
head multi-finish	-23	15	16	-8
head must	22	-6
head nail	33			-12
head nail holes	11
head nail plates	-32	16		10
head nails		8
head nickel	6
head night	16
head nipple	-17	25		-20
head nosing		-16	-10	-18		22
head nut		-17		8
head oak	15
head ofc	14
head old	27
head one's	19
head only	31
head opened up	22			-7
head opener's	22
head opening	25
head outlet	41			-4
head outlets				-8
head outside		18		-9
head oven	4
head overflow	20
head overhang	14
head own	20			-9
head p trap	-10	-12	5		6
head pad	-22			25
head pan		12
head panels				6
head paper	24			-5
head part	30
head paste	-7				15
head patch	24	-18
head pavers	12	-21	-18	10
head pendant	6	-16		8
head pex	-17	-15		27
head phone	10
head photo eyes	30	-15		-22
head photos	26
head pickets	-32			11		22
head picture	27	-5
head piece			13
head pieces	-5	9
head pins		19
head pipe's	33	-8		-18
head pipes	15		-22	6
head pitch	11
head plank	23	-16
head plaster	9	-17		11
head plastic	10	-8
head plate	-32			26
head plates	-38	7		4	6
head please	-43	52	-8	-31
head plenty			-11
head plinth	18	-4
head plinths	-17			23
head plug's	6
head plugs				6
head ply		-8	14	-6
head plywood	21
head plywood's		9
head pocket door	10
head poly	-14			14
head post	20
head posts		-26	-6	12
head precharge	23
head pressure	29			-17
head pressure's	5
head primer	-23		13
head print	23	-6
head profile	7
head pull	25
head pulls						13
head punch	8
head purple board			-11	8
head put	25
head putty	-17			29
head pvc	-31	8	-9	28
head quiet		13		-5
head quikrete	17	-13		-9
head rack	24
head radiator		-10
head rafter	-10			16
head rails	-4			5
head rain	13
head range	-6	16
head range hood	-9		18
head read	23
head rear	19
head receptacles	-19			15	15
head red	16
head reducer		6
head register	6
head regulator		6
head render	15	-12	12	-19
head rental	21			-8
head replacement	36	-27
head return	11
head reveal		7
head rh	18	-10
head rigid	-20			22
head rim	-19	-4		27
head rim joist				8
head ring	-26	19		7
head rise	21
head riser	17
head riser's	20
head risers	46	-39		-24
head rock	34
head rocks	15
head rod		-18			14
head rodding point	31	-5
head rods	-6		12
head roll	18	-20	7	-23		-17
head roller	-8	23
head rollers					5
head roots	23
head rosette	4	4	-7
head rough			9		-8
head rough in	13
head round	36			-10
head row	16
head run	51			-11
head salon	19
head sample	23	-11
head sand	8
head sandpaper	21		-12	-22
head sandwich	22
head satin	8	-8	17	-24
head saw	15
head sconces					9
head scrap	16
head screed	5
head screen	24
head screw				18
head screwdriver	20
head screws				18
head seal	13
head sealant	-41	38	11	-14
head sealer	-7		4	-16	15
head seam	11
head seam's	16
head seams	22			-7
head second	6
head second coat	9
head self leveler	-30	-6	-5	34
head set	-7			16
head shd	8
head sheet	8
head sheet rock	5
head shelf	14	-5
head shelf pins	-23			35
head shellac	-4			5
head shelves	12	-34	-16	16
head shim		4
head shims	-27	15	6
head shingles	13	-8	20	-29
head shld	9
head shoe	-13	30		-24
head shop	13
head shot	16
head shower			5
head shower walls	20			-11
head shutoff		5
head shutters		-9
head side	7
head sides	38			-32
head siding		-31	10
head sign	25			-19
head signal	13
head signs	8
head silicone		10	-9
head sill's	11
head sink	29
head skim	25	-16
head skip	11
head skirting	-20		12
head skirting's	-9		-7	10
head slabs	-19	-25	21	-20		17
head slatwall		-19	-5	19
head sleeve	23
head slider	23
head slider's	20			-9
head slope	16
head slow	34
head smoke	25	-10
head smoke alarm	12	13	-23	-10
head smoke detector				8
head socket	13
head sockets	-8	-22		22
head sod	-9			17
head soffit	26
head soffit vents	37			-24
head soffit's	22
head somewhere	21
head sorry	34
head speakers	-29	-14	17	6
head spins	16
head splice	29
head split	17
head spots	28			-23
head spout	13
head spring	12
head square	34	-6
head stack	30	-23	-6
head stain	20	-27	11	-15
head stain blocker		-10
head stainless	20
head standpipe	22
head staple	21	6	-6	-32
head staples		-12	7
head stat	14
head static	24
head stem	9
head step	13
head stile	12
head still	23
head stock	-5	-13	18	-12
head stones		21	-20
head stop	17	-8
head store	24
head story	7
head stove	21
head straight		15		-8
head strainers	-34		8	27
head strap	-27			32
head street	-19			9	11
head string	20
head stringers	-5		16
head structural screws	-14	11
head stub	14
head stucco	10
head stud	37
head studs	8			-7		4
head subfloor	27
head supply line	-20		-8	-22	23
head supply plenum's		12
head switch	35	-10		-11
head tag	35			-22
head tap	11
head tapcons	-32	17	-7	19
head tape	-14	5
head tee	-20			21
head temp	15
head template	23	-8
head tester	-14	23
head the lady	-22	29	-10	-9
head thermostat	17
head thick	33			-9
head thin set	14
head thing	14
head thinset	-9		6
head third	23
head though	23
head threshold	5
head tile's	11
head tiles				-7
head tip's	-10	13
head toe	11
head toe kick	8
head toggle bolts	-11	-11	-11	-14	24
head toggles	-18	-6		24
head toilet	27
head toilet seat		-10		14
head too short	20
head towel	22			-21
head towel bar	-22	-31	-20	-21	11	25
head track	47
head traffic	11
head trailer	10
head trap arm	23
head tray	14			-12
head tread	31
head trench	8
head trim	10
head trim's	15			-10
head truck	22
head trunk	33		-15	-12
head tub	-12	16
head tub drain	22
head tub spout	-6		10
head tub's	37	-15		-20
head tubes	-29	-18	13	22
head two	14
head two by six		12		-15
head two by ten	15			-14
head upper		-12	-14	10
head uppers	7	-25		5
head upstairs	-26	-9		33
head ute	17
head valves		13		-14
head van	16
head vanity	11
head vanity top	11
head vapor barrier		7		-12
head varnish			-9	9
head vent	15
head vent stack	20
head vinegar	7
head vinyl					8
head wait	30	-12
head wall	16
head wall bend	26
head wall paper	9	-12	-16	5
head wall tile	22	-23
head wall's	16
head wallpaper		-12	20	-17
head walls	27
head walnut	-13	22		-12
head washers	-38	46
head water	12
head water heater	14
head water's		12		-5
head wax	-26			25
head wax ring	-44		11	31
head wc	30
head weatherstrip		11		-6
head well	-8	15
head when	11			-5
head whip		-24	-4	23
head white	31
head whoever	6
head wide	18
head window stool	5
head window's	4
head windows		-22		11
head winter	14
head wire	18
head wire nuts		-6
head wire's	-7		9	-15
head wires	51	-29		-30
head wood filler	-14	19	-10
head work	16
head worktop	12			-6
head wrap	13
head wrong	-16	22		-10
head x	-10				5
head yellow	14
head yet	8
joined and modal		8		-7
joined and none				9
joined and owed	20
joined comma copula	5
joined comma modal	9
joined run-on none	41
joined start imperative	5
joined start modal	8
joined start none	42
joined start owed		13
joined start present	14
joined word imperative		16
joined word modal		4
joined word none		25		-7
kept			41
last cue ate other	-10	20
last cue bought other	-18	28		-11
last cue bought same	-12	17		-35	19
last cue lacks same		11
last cue need same		39
last use buy imperative same		33		-26
last use buy modal same	-6	13
last use buy owed same	17
last use buy past same					23
last use buy present other		19	-12	-16
last use have imperative same		8
last use have past same	6			-16
last use measure imperative other	-7	16
last use measure imperative same	-7		14
last use measure owed other	4
last use measure past other				4
last use measure past same	17
last use measure present same	5
last use move imperative other				-8
last use move imperative same	10
last use move modal other					5
last use move modal same	41	-5		-13
last use move owed same		5
last use move present other		-7	13
last use need modal other	16
last use need modal same	-25	22	19	-9
last use need owed other	7
last use need owed same		21
last use need past other	11
last use null imperative other	22
last use null imperative same	29	-7		-11
last use null modal other		9
last use null owed other	14
last use null owed same		-8			15
last use other imperative same		5
last use other owed same	-6	31
last use other past other	10
last use return past other	15
last use say modal same		9
last use say owed same	26
last use say past other		-17	6
last use say present other			15
last use see imperative other	-7	-13	9	-23	19
last use see modal same	19		-6
last use see owed same	21			-6
last use see past same	15
last use use imperative other	-28					26
last use use past other	10
last use use past same	-30	-16		35
last use use present other	19		-5
last use use present same			10	-6
last use work owed other		16
last verb add other	5
last verb add same			12
last verb adjust other	16
last verb adjust same	22
last verb arrive same	-19	-27	39	-32
last verb ask same	20
last verb bend same	9
last verb blow same	-6	12
last verb bolt same	-13	-32	-14	15	19
last verb box same	-12			18
last verb break same		4
last verb bring same		31	-15	-37
last verb buy other	5
last verb buy same		21
last verb buzz same	-4		-7	16
last verb call same	-24	14	20	-19
last verb can same	-10	14
last verb can't same	25	-8
last verb cap other			9
last verb cap same				4
last verb catch same	17
last verb caulk other	21
last verb caulk same	8
last verb change other		6		-6
last verb change same	12			-10
last verb chase same		7
last verb check other	16
last verb chuck same	-13		18
last verb clamp same			8
last verb clean other	20
last verb clean same	17
last verb clear other	17
last verb clear same	50	-8		-20
last verb close same		6		-28
last verb come other	9
last verb come same	8
last verb cover other	6
last verb crack same	-32	24
last verb crush same	16	-8
last verb cut other	27
last verb dial same	15
last verb dig same				18
last verb do other		-14	9
last verb doesn't same	18			-27
last verb drain same	-6	-16		17
last verb drill other		7
last verb drill same	27	-7
last verb drip same					-8
last verb drop other	-10	9
last verb drop same	30
last verb dry same			8
last verb dump same		11
last verb end same	14
last verb feather same		14		-10
last verb feed same	-17	-13		22
last verb feel same	11
last verb figure same			13	-9
last verb fill same	22		-9
last verb find other	-38	-7	17		24
last verb find same		-7	5
last verb finish other	23
last verb fire same	-15	20
last verb fit other				12
last verb fit same		9
last verb fix same	-37		-5	31
last verb flash other	15
last verb flip other	-18	23
last verb float same	-14	22
last verb flush other	6
last verb flush same	28			-6
last verb foam other	-21	21
last verb forget same	32	-26
last verb frame same	-20	16		6
last verb fre same	22	-5
last verb get other						4
last verb give other	-4		12
last verb give same	-11	5			8
last verb glue other	21	-9
last verb glue same	-21					5
last verb gotta same	25
last verb grab other	10
last verb grab same					16
last verb grout same	-20			25
last verb guess same	10
last verb hand same	-17		-14	13		19
last verb hang same	-27	-12		47
last verb haul same	4
last verb haze same	10
last verb he'll same	18
last verb hit other		7
last verb hit same	7	-9	6
last verb hold other				10
last verb hose same	13
last verb hum same		-8		-21		21
last verb install other		10
last verb keep other	7	-13		-4
last verb keep same		9
last verb kick same	23
last verb knock same	-5			14
last verb know same	-7	-10	15
last verb land other	13			-7
last verb land same	-29		21
last verb lay same				-8
last verb leak same	33	-12		-9
last verb lean same	7
last verb let same			9
last verb level same				11
last verb like other	10
last verb like same	-7	5
last verb listen same	5
last verb look other	-14	-6			21
last verb look same	23
last verb make other			15
last verb mark same		8		-4
last verb measure same	35			-15
last verb meet same	16
last verb meter same	31			-13
last verb mitre same	31	-20
last verb mount other	28	-5		-14
last verb move other	-20	13
last verb move same	33
last verb nail same	-5	14
last verb need other	22
last verb need same		34		-4
last verb notch same	24
last verb notice same	17
last verb open same	12	-12		-6
last verb order same		15
last verb owe same		12
last verb own same	19
last verb pack same	15	-31		9
last verb paint same	32	-17
last verb pass other	14
last verb pass same	10
last verb patch other	14			-4
last verb patch same				11
last verb pick same		13		-10
last verb pin other	16
last verb place same	23			-9
last verb plane other		-17	12	-21
last verb plane same	18
last verb point same	11
last verb pop same	8	-11	12	-32
last verb prime same			17	-21
last verb pull other	-16			21
last verb pull same				17
last verb pump same	8
last verb push same	17		-22
last verb quit same	-7			5
last verb rack other	37	-16	-15	-20
last verb rate other	10	-23	-19
last verb rather same	7
last verb read other	-28		31	-25
last verb read same				8
last verb redo other	15	-6
last verb redo same	-14	13	11	-26
last verb refasten other	18
last verb reglue same	25	-9		-13
last verb rehang other	21
last verb replace other	-10	17
last verb replace same	7	-7
last verb rip other		12
last verb rip same	34			-16
last verb rock same	14
last verb roll other	13
last verb roll same				5
last verb round same	5
last verb run other			-5			6
last verb sag same	9			-5
last verb sand other	13	-22
last verb sand same	-6
last verb say other	19
last verb say same	13
last verb scrape other		14		-8
last verb scrape same				5
last verb screw other	24
last verb screw same	8
last verb scribe other	22
last verb scribe same	-9	13
last verb scuff same			5
last verb seal other					13
last verb seal same	9
last verb send other			13
last verb send same	23	-4
last verb set other	-8			12
last verb set same				9
last verb shim other						4
last verb short same	29	-15		-13
last verb show same		16
last verb shut same	22			-10
last verb sign same			8
last verb sister other	18
last verb sister same	23	-21
last verb sit other	-14				14
last verb size same		11
last verb skim same	7
last verb slide same	28	-17
last verb slit same		-5	17	-23
last verb smell same	28
last verb snake same	22
last verb snug same		17		-15
last verb sort other	11
last verb spend same				12
last verb splice other	14	-11		-19
last verb spray same	23
last verb squeak same	-8	9
last verb start other	30	-14
last verb start same		-14		22
last verb stick other		10		-14
last verb stick same		7
last verb stretch same	8	-20	-6	5
last verb strip other	-12	-10		21
last verb stuff same		-13	-10	19
last verb swap other	-7		7
last verb sweat same	8	7		-19
last verb swing same	10
last verb take other		18
last verb talk same	-8	10
last verb tape other	15
last verb tape same	16
last verb tear same	39			-21
last verb tell other	-16	-14	14	13
last verb tell same	23
last verb test same	35
last verb they'll same				5
last verb think other	-4		-5	13
last verb throw other	5			-10
last verb tie same	14	-8
last verb tile same	-8	15
last verb top same	28	-13		-11
last verb touch same	21	-8		-8
last verb trace same		-17		11
last verb trim other		18
last verb trim same			-5	11
last verb trip other			-5	5
last verb trip same		13
last verb try same	12		-17
last verb turn other	13	-10	4	-15
last verb turn same	5	-19	15	-20
last verb use same	-24	-7	4	27
last verb vacuum same	30
last verb wait other	17
last verb wait same	-8	18
last verb walk same		5		-7
last verb wanna same	-23	-12	-5	-11	24
last verb want other	-10		18
last verb wash same	21
last verb weigh same			4
last verb wire same	16
last verb work same	22
last verb would same	13
last verb wrote same		-12		7
left # G	36
left # N		5
left # Q	-9		20	-28
left # T	17
left # about			-27
left # add		-4		15
left # all	-27	-29		38
left # attic	13
left # bath	9
left # bring	-9	23
left # buy	-9	19			6
left # change	-33	18		19
left # cut		5
left # dining room	11
left # do		-8	-5	15
left # every	31			-10
left # figure	-32	34
left # for	15
left # from	-17		24
left # garage	-7			15
left # get	-28	38		-5
left # hall	6
left # have			31
left # hit	10
left # i	6
left # i'll	7
left # i'm	17			-4
left # in	20
left # is				10
left # it	12
left # it's		13
left # just	26		-4
left # kitchen				6
left # leave			12
left # let	7
left # living room	17
left # miss		8
left # need		14
left # nobody	8
left # of	22
left # on	10
left # only	-10	-19	20	-9
left # order		8
left # other		-6	13
left # pantry	18
left # replace	-26			31
left # return	-14	-25	-33	-18		35
left # screw	-14			18
left # seal	5
left # short	-33	45		-9
left # take	-6		-4	-21		27
left # test	5
left # that's	-10			13
left # the	-6	-25	34	-37
left # there's			12
left # throw	-19	33	-4	-13
left # use				38
left # want	17
left # we're	10		-17	-11
left # with	36	-9		-15
left &	-18	6		17
left (	-22	11	-13
left )	4
left +	-14			12
left -		13
left /	23
left 1 /	14
left @	31
left G +	-17			8
left G G	-5	-28		13	11
left G Q		19	-11	-17
left G T	27			-7	-7
left G about	29
left G and		14
left G are	21			-6
left G be	12
left G for	24
left G get	31
left G has	7
left G have	37		-20
left G is	42
left G miss	10			-18
left G need	-7	20
left G of	32
left G off	14
left G take		-7		10
left G the	36	-5		-17
left G to	25			-8
left G want	28	-19
left G with	17
left G wouldn't	5
left N )	4
left N and	-10	22
left N for		9		-14
left N in	16
left N of	-5	7
left N with	-9		-9	12
left Q +	-4	22		-6
left Q @	6
left Q G	-36	17	7	14
left Q Q	30	-14
left Q above	14
left Q and		18
left Q at	7
left Q below	8
left Q by	27
left Q for	9
left Q from	26
left Q in	32
left Q need	-8	18
left Q of	24
left Q off	27
left Q on	31
left Q over	34
left Q so	8
left Q then	7
left Q to	26
left Q toward	9
left Q under	21
left Q where	18			-5
left Q with		-14		24
left T for		11		-9
left T if	6
left T with		15		-11
left a	11
left a G	23	-15
left above	9
left across	10
left add				7
left after	19
left all				26
left all in	-14	-17		21
left along	14
left already	10	-11	6	-8
left and		6
left and it	5
left and then	24			-16
left are	29
left are in		-10		12
left around	18
left as	29
left at	22
left attic	15
left b	23
left back		-18		-14		26
left back in			17	-14
left back of	13
left back to	27
left back with		10		-19
left bath	12
left bed	21
left bedroom	7
left before	19
left before i	9
left behind	14
left below	7
left bend	12
left between	25	-5
left blow		-9		10
left book say	17
left bottom of	17
left box	25
left break	-13	13
left bring		14
left bring me	-21	28
left burn through	-13			25
left buy	-12			-6	5
left by	19
left by Q	35	-10
left by T	-9	-6	21	-16
left c	18
left call it		15	-5	-17
left can't	12
left can't get	20	-7
left caulk	16
left change		7
left check	11
left chip on	6
left clean	13
left clear	8
left closet	-10	-10	20	-7
left coat	25	-16
left come		-6			8
left come in	30
left come out	20
left come up	32	-15		-10
left come with	14
left crack	6
left cut in				7
left dead	14
left dig	17
left do	5
left don't	8
left down from	25
left down to	-20	-27	44	-33
left down with	34			-16
left drill	24			-7
left drip	12
left drip on	16
left drive	-15	-9		23
left drop	5	-6	6
left each	7
left eat		-13		16
left em		7
left end of				6
left enough	13
left entry	9
left every	13
left except	10
left figure		24	-11	-22
left fill	20
left fill with	-9	-11		19
left finish	23
left fit		-7		11
left flush	23
left foam		-17	-5	26
left forget	-11	17	-7	-8
left frame	14
left full of	17
left garage				9
left get			16
left get its				6
left get maybe	-8		6	4
left get me	-9	23
left get to	10
left give	18
left give me	-13		-5	-10	21
left glue	17
left go				10
left go in	11
left go on	19
left go through	-38			56
left gonna need	22	-17
left gonna want		16
left good	12
left gotta be	16
left grab					16
left grab me	20	-8
left grind	-7			15
left half	-16		17	-6
left hall	8
left hand		-12	15	-15
left hang				11
left hang by	27			-11
left hang on	-15	11		6
left have			7
left have to	13
left he	8
left he need	-15	22
left he want	29	-25
left he's get	-10	7	7	-7
left hit	22
left hold	20
left how	12
left i	14
left i bring	14	-8	-5	-5
left i cut				10
left i do	9
left i finish	17
left i get	-27		39
left i hang	-18			26
left i have	-36		41
left i leave	-23	-10	21
left i make	5
left i need		10
left i pull				16
left i put		-5		21
left i run	-16			30
left i set	-7	-11		17
left i sister				11
left i swap	-26	-5		32
left i take	-33	-19	-5	22		17
left i think			8
left i use				49
left i want		14		-13
left i will	6
left i'd like	-21	24
left i'll	6
left i'll bring	9
left i'll need		-16	23
left i'll want	-27	33
left i'm	17
left i'm at	15
left i've get	-19		35
left if	7
left in	6
left in at	17
left in for	11
left in the	6			-9
left in with		12
left inspector want	20	-12
left instead of	18			-14
left into	23
left it	7
left it and	-6	18
left it at	20
left it be	28
left it before	16
left it for	-28	21
left it from				9
left it in	-7	-9		25
left it need	6
left it on				7
left it run	18
left it take		-8	-6	11
left it to	37			-14
left it up	21	-18		-10
left it with	-5			12
left it's		12
left it's get	-10	5	-17	13
left it's in	18
left job	-10			15
left just	21
left just need	5			-10
left keep	4
left land	12
left last	13	-8
left laundry	20
left lay	-20	-10		27
left leave in	5
left leave of	14
left leave on	18
left like	4
left living room	17
left loose	22
left lose	25
left make	36	-15
left maybe	-11		37	-9
left me	-4	19
left measure	11
left meet	10
left miss		18
left mix	-4	-13	-7	22
left more than	15
left move	22
left near	19
left need		16
left need G		8
left new	-31	34	-11
left nobody	8
left nobody touch	5
left not	19
left of G		-12
left of that	14	-8
left of the	42			-27
left off	13
left on	9
left on all	7	-18
left on every	21
left on it	-14			9
left once	8
left one's	24
left only		-28	27	-12
left only get	-39	-6	34
left open				12
left opened up	8
left or	20
left order	-10	22
left other	13	-8		-7
left out	19
left out at	9
left out of	29
left out on	5
left out with	-11	-14	-5	-9	30
left outta	30	-4
left over	27
left over by	18
left paint	26
left pantry	18
left pass				9
left past	23
left patch	23			-12
left pick	8
left pick up	-13	8	-5	-21	29
left plane	5
left plug	20			-5
left point	18
left pop	13
left pour	-28		-8	26
left powder room	7
left prime	19	-14
left put				6
left put in	-15		-15	25
left quick	19
left rate	10			-8
left read	20
left return	-19	-23		-16		34
left right	-17	21
left rip	6
left round	7
left sand	-16	6	14	-4
left say	27
left scrape	13
left screw			-8	5
left screw in		13
left scribe	29
left seal	12
left see	9
left send	-5					13
left set				18
left she want	5
left short	-25	48		-9
left short by	-4	16		-13
left short on	23	-5
left shut	10
left shy of	-4	-12		15
left since	4
left sister	14	-7
left sit		6
left sit in	7
left sit on	18
left snap	13
left split	12
left start	10
left stick	-6			15
left still	-14	-9	27	-5
left still have	-11		33	-7
left still in	-11	-13	22	-4
left still need		12
left still on	12
left strip	17
left supply	22	-13		-8
left swap				28
left take	-16			13		10
left test	8
left than	19
left that	20
left that with	-17			26
left that's	-8			12
left the		-10
left the G	7
left the lady want	-19	22
left the last	21
left the leave	8
left the right	-17	21
left the wrong	9
left them	-5		-9	-13	20
left then	7
left there	21
left there be	30			-11
left there is		-26	16	-14
left there's			14
left they want	-12	4			17
left thing	-16	-10	22	-8
left think			8
left those	19	-22
left those and		26	-15	-13
left through				33
left throw	-30	26		6
left tile	-20	23
left till	19
left time				5
left to be	5
left to move	14
left to pull	9
left to put	-33	33		17
left to see	15
left too	18
left top		10
left top of	17
left touch	11
left toward	6
left trim	14
left truck eat	16
left try		-12	16	-11
left turn	17
left under	18
left under it		10
left until	17
left up				7
left up at	8
left up in	22			-9
left up on	-21			31
left up to	6
left up with	10
left us	-19	31
left use				37
left use about	-18	-7		29
left use up	-18			27
left wait on	-6	14
left wall	14
left we	13
left we finish	10
left we get	12
left we have	13			-18
left we need		10
left we put	-9	4
left we use	-13			25
left we're	10		-17	-11
left when	17
left where	13
left which	5
left why	13
left will	10
left with				8
left with the	-14	-14	20
left won't	10
left wouldn't	5
left you	22
left your	14
left1 &	-18	6		17
left1 (	-22	11	-13
left1 )	4
left1 +	-14			12
left1 -		13
left1 /	23
left1 @	31
left1 a	11
left1 above	9
left1 across	10
left1 add				7
left1 after	19
left1 all				26
left1 along	14
left1 already	10	-11	6	-8
left1 and		6
left1 are	29
left1 around	18
left1 as	29
left1 at	22
left1 attic	15
left1 b	23
left1 back		-18		-14		26
left1 bath	12
left1 bed	21
left1 bedroom	7
left1 before	19
left1 behind	14
left1 below	7
left1 bend	12
left1 between	25	-5
left1 blow		-9		10
left1 box	25
left1 break	-13	13
left1 bring		14
left1 buy	-12			-6	5
left1 by	19
left1 c	18
left1 can't	12
left1 caulk	16
left1 change		7
left1 check	11
left1 clean	13
left1 clear	8
left1 closet	-10	-10	20	-7
left1 coat	25	-16
left1 come		-6			8
left1 crack	6
left1 dead	14
left1 dig	17
left1 do	5
left1 don't	8
left1 drill	24			-7
left1 drip	12
left1 drive	-15	-9		23
left1 drop	5	-6	6
left1 each	7
left1 eat		-13		16
left1 em		7
left1 enough	13
left1 entry	9
left1 every	13
left1 except	10
left1 figure		24	-11	-22
left1 fill	20
left1 finish	23
left1 fit		-7		11
left1 flush	23
left1 foam		-17	-5	26
left1 forget	-11	17	-7	-8
left1 frame	14
left1 garage				9
left1 get			16
left1 give	18
left1 glue	17
left1 go				10
left1 good	12
left1 grab					16
left1 grind	-7			15
left1 half	-16		17	-6
left1 hall	8
left1 hand		-12	15	-15
left1 hang				11
left1 have			7
left1 he	8
left1 hit	22
left1 hold	20
left1 how	12
left1 i	14
left1 i'll	6
left1 i'm	17
left1 if	7
left1 in	6
left1 into	23
left1 it	7
left1 it's		12
left1 job	-10			15
left1 just	21
left1 keep	4
left1 land	12
left1 last	13	-8
left1 laundry	20
left1 lay	-20	-10		27
left1 like	4
left1 living room	17
left1 loose	22
left1 lose	25
left1 make	36	-15
left1 maybe	-11		37	-9
left1 me	-4	19
left1 measure	11
left1 meet	10
left1 miss		18
left1 mix	-4	-13	-7	22
left1 move	22
left1 near	19
left1 need		16
left1 new	-31	34	-11
left1 nobody	8
left1 not	19
left1 off	13
left1 on	9
left1 once	8
left1 one's	24
left1 only		-28	27	-12
left1 open				12
left1 opened up	8
left1 or	20
left1 order	-10	22
left1 other	13	-8		-7
left1 out	19
left1 outta	30	-4
left1 over	27
left1 paint	26
left1 pantry	18
left1 pass				9
left1 past	23
left1 patch	23			-12
left1 pick	8
left1 plane	5
left1 plug	20			-5
left1 point	18
left1 pop	13
left1 pour	-28		-8	26
left1 powder room	7
left1 prime	19	-14
left1 put				6
left1 quick	19
left1 rate	10			-8
left1 read	20
left1 return	-19	-23		-16		34
left1 right	-17	21
left1 rip	6
left1 round	7
left1 sand	-16	6	14	-4
left1 say	27
left1 scrape	13
left1 screw			-8	5
left1 scribe	29
left1 seal	12
left1 see	9
left1 send	-5					13
left1 set				18
left1 short	-25	48		-9
left1 shut	10
left1 since	4
left1 sister	14	-7
left1 sit		6
left1 snap	13
left1 split	12
left1 start	10
left1 stick	-6			15
left1 still	-14	-9	27	-5
left1 strip	17
left1 supply	22	-13		-8
left1 swap				28
left1 t area.	8
left1 t finish.	-6	5	11	-13
left1 t fixture.	29
left1 t surface.	19
left1 t tool.		-9	22	-21
left1 t work.			15
left1 take	-16			13		10
left1 test	8
left1 than	19
left1 that	20
left1 that's	-8			12
left1 the		-10
left1 the wrong	9
left1 them	-5		-9	-13	20
left1 then	7
left1 there	21
left1 there's			14
left1 thing	-16	-10	22	-8
left1 think			8
left1 those	19	-22
left1 through				33
left1 throw	-30	26		6
left1 tile	-20	23
left1 till	19
left1 time				5
left1 too	18
left1 top		10
left1 touch	11
left1 toward	6
left1 trim	14
left1 try		-12	16	-11
left1 turn	17
left1 under	18
left1 until	17
left1 up				7
left1 us	-19	31
left1 use				37
left1 v buy.	-16	18			15
left1 v have.			7
left1 v measure.	18
left1 v need.		19
left1 v return.	-19	-23		-16		34
left1 v say.	4
left1 v see.	25
left1 v use.				37
left1 wall	14
left1 we	13
left1 we're	10		-17	-11
left1 when	17
left1 where	13
left1 which	5
left1 why	13
left1 will	10
left1 with				8
left1 won't	10
left1 wouldn't	5
left1 you	22
left1 your	14
left2 -		13		-15
left2 /	-11	15
left2 1	14
left2 T	5
left2 T.	5
left2 a		17
left2 about	22			-14
left2 across	8
left2 after	4
left2 again				11
left2 ain't	18
left2 air	13
left2 all		-5
left2 already	-17	-6	9			15
left2 and		21
left2 arrive		-11	7
left2 attic	-11			16
left2 away	17
left2 back	7
left2 bag	-22	5		14
left2 bath	20
left2 bay	12
left2 be	40
left2 bead				8
left2 before	19
left2 bend	18		-5
left2 big	15
left2 black		-19	13	-20
left2 block				15
left2 bolt				12
left2 book	17
left2 bottom	24
left2 bracket		8
left2 bring	-28		16			5
left2 burn				14
left2 buy					11
left2 by	4			-18
left2 call	13			-7
left2 can	33
left2 can't	22
left2 cap	-24			28
left2 ceiling	12
left2 change	-32	-19		27
left2 check	16
left2 clean	21
left2 close				11
left2 closet	26
left2 come		-4			8
left2 could	8	16		-31
left2 cover	26			-9
left2 crack	11
left2 cut	13	-5
left2 deep	6
left2 didn't	-24	19	7	-4
left2 ding	14
left2 dining room	22
left2 do		11
left2 dog	16
left2 don't	42	-13	-11
left2 down			27	-37
left2 drain	9
left2 drip	16
left2 dry				7
left2 each	27	-20
left2 eat				10
left2 electrician	10
left2 em	39			-19
left2 every	-4			13
left2 fill	-9	-11		19
left2 fine		-6		12
left2 finish				10
left2 flash	16
left2 flat	15	-21
left2 floor	18
left2 foam	-21			26
left2 for			6	-7
left2 frame	12
left2 from	33
left2 front	9
left2 full	17
left2 garage	24			-10
left2 give		-7		-9	19
left2 go				14
left2 gonna		6	5	-16
left2 good	34
left2 grab	18	-5
left2 guy	22
left2 hall				13
left2 hard	10	-18	-5	5
left2 has			-5	6
left2 have			13
left2 he	7
left2 he'll	11
left2 her	31	-10		-6
left2 here	17
left2 hold						14
left2 hole	15
left2 holes				8
left2 homeowner	21	-5
left2 hook	20
left2 house	17
left2 i'd	-18	33	-8	-15
left2 i'm		18
left2 i've	-7		25
left2 in	42
left2 inspector	24	-8
left2 instead	18			-14
left2 is	8
left2 it's	15
left2 its		8
left2 joint	-11			7
left2 just		-6		13
left2 keep	9
left2 kit	-15			14
left2 kitchen	31			-5
left2 ladder	18
left2 land	7
left2 lay	-7	13	-5
left2 leak	17
left2 leave			7
left2 let		-17		10
left2 let go	19		-13	-5
left2 lid	-25	-16		30
left2 lift	19
left2 line	-17			23
left2 long		15
left2 loose	11
left2 lose	-7			16
left2 lot	11	-18		-10		16
left2 make	-5	11
left2 mark.	-8	16
left2 me			9	-8
left2 miss	-6	23
left2 mrs	13
left2 nail	-11			28
left2 need	-9	7	11	-12
left2 no	25
left2 nobody	35
left2 not		9
left2 nothing	29		-12
left2 now		-5		17
left2 number	23
left2 of	11			-4
left2 off	15			-4
left2 only		-15	9	5
left2 open		9	-6
left2 order	-26	28
left2 out	11
left2 over			12
left2 owe	-23	20	-16	-18	20
left2 owner	20	-8
left2 paint	13
left2 peel	16
left2 pick	-11	7		-20	28
left2 piece	13
left2 pipe	8
left2 plate	7
left2 plumber				11
left2 pull	21
left2 put	-16			36
left2 ready	16
left2 red	-6			14
left2 right	18
left2 ring				5
left2 rip				6
left2 roof	15			-5
left2 sand	28
left2 say		6
left2 scribe		7
left2 see	-11			21
left2 send	-8	-9		-9		23
left2 set	31	-10		-11
left2 she	20		-5
left2 she's		11	-12
left2 sheath	16
left2 sheet	15
left2 shim			16
left2 shop	-21	-22	15	9
left2 short		12
left2 should	26	-4
left2 shy		-10		12
left2 side	36	-9
left2 silicone	5
left2 size	17
left2 skim	7
left2 slab	19			-13
left2 slip	8
left2 so				10
left2 somebody	10
left2 somebody's	16
left2 splice	22
left2 stain	4
left2 stairs	20
left2 stand	9
left2 still	-5		19
left2 strip	7
left2 swap	-15			19
left2 t	4	-10
left2 t area.		-4
left2 t defect.	15
left2 t fixture.	24
left2 t role.	15
left2 t surface.	11
left2 t tool.	18
left2 t work.	14
left2 take			-9	-7		21
left2 tear	8
left2 tell	13
left2 tenant	14
left2 test	11
left2 that				8
left2 that's		-8
left2 the lady	-10	16
left2 them	6
left2 there	5
left2 there's	-22	-18	42	-31
left2 they're	13			-4
left2 think	-14	8
left2 this				9
left2 those		12
left2 through	25
left2 tile	26
left2 till	20			-11
left2 to	4
left2 too	17
left2 top	9
left2 trim	19
left2 truck	16
left2 try		13
left2 under	18		-9
left2 underneath	17
left2 unit	17
left2 up				6
left2 upstairs	19
left2 use	-38			54
left2 v buy.		7
left2 v have.			13
left2 v need.			5
left2 v see.				7
left2 v use.	-38			54
left2 wait		4
left2 walk	15
left2 walls	32		-19
left2 want	12
left2 water	10
left2 we'll	-19	25
left2 we're		17		-9
left2 where	8
left2 which	6
left2 wide	21
left2 will		18
left2 wire	23			-6
left2 with		-15		12
left2 won't		8
left2 wrap			9
left2 wrong	25
left2 you	36
left3 -	12
left3 N	12
left3 T			5
left3 about	5
left3 all				9
left3 already		-10		7
left3 an		7
left3 and	-14	9
left3 another			-21	6
left3 are	-12			36
left3 back	-23			11		9
left3 basement	7
left3 be	20
left3 before	18	-13
left3 behind	15
left3 black	12
left3 board	-33	25	9	-7
left3 both	24			-20
left3 bottom	8
left3 box	13
left3 break	22	-6
left3 can	11
left3 can't	-18			23
left3 ceiling	7
left3 clamp		-6
left3 clean	11
left3 corner	12
left3 cut				8
left3 don't	13
left3 down		-6
left3 drain		6
left3 drop	16
left3 dump	11
left3 electrician	31	-15
left3 em	32
left3 end	-5	-9		15
left3 every				10
left3 falls	10
left3 fill	-13			21
left3 find	12
left3 finish	-13			21
left3 flat	23	-8
left3 floor	6
left3 for	13	6		-30
left3 fre	19
left3 get	10
left3 glue	18
left3 gotta	14
left3 hall	31
left3 hang	15
left3 have	35
left3 he					18
left3 her	30		-10
left3 hinge		9
left3 his	17	-4
left3 hit		-7		11
left3 holes	29			-11
left3 i'll	40	-22
left3 i'm	-6		18
left3 i've	-7			12
left3 if	21
left3 in		-16
left3 it	14
left3 it's	20
left3 its	5
left3 joint	-19	8	16
left3 just	-21	-25	13	16
left3 kitchen	14
left3 last	-27		5	25
left3 leave	-9		27	-6
left3 like	24
left3 living room	18
left3 loose	18
left3 maybe	-11		18
left3 me		9
left3 measure		11
left3 miss	23
left3 more	4
left3 my	31
left3 nail	5
left3 need		12
left3 new		-9		16
left3 nobody	28
left3 now				4
left3 off	29
left3 only	29			-7
left3 order	9
left3 out	5			-9
left3 outside	22	-5
left3 pack	-10	13
left3 paint		-14	17	-13
left3 pick		19
left3 pipe				4
left3 pull	26			-4
left3 put				7
left3 replace	-7			16
left3 right	17
left3 roll	-19		24
left3 run	33
left3 sand	17
left3 say	5
left3 second floor	12
left3 see	9
left3 send	-20	21				4
left3 she	10	5		-10
left3 she's	27
left3 shim	17			-13
left3 shop		8
left3 side				11
left3 sit	19
left3 somebody	-22	23
left3 somebody's	11
left3 still	-15	10			17
left3 supposed	-16	24
left3 swap	-5	4
left3 take	8
left3 tape	37	-11		-24
left3 that's	-4	6		5
left3 the lady	-16	-21	24
left3 them		-22	20	-16
left3 then	16		-5
left3 there		-6	17	-23
left3 there's	28
left3 they	34	-13
left3 they're	14
left3 this				9
left3 tie		-15		8
left3 tile		11		-21
left3 too	5	5		-16
left3 truck	13
left3 up				5
left3 use	26	-5		-15
left3 wall			4
left3 want	8
left3 water	21
left3 we're			13
left3 were	21
left3 what's		10
left3 when			6
left3 white				-20
left3 with				10
left3 within	23	-5
left3 x		18		-13
left3 you	18
length after have far	-29	30
length after need far	-8	-27	16
length after need here	8
length after need sentence		17	-21	-32
length after none far		5		-18
length after none here		9		-26
length after used far	10
length after used sentence	-29		22
length beside get	-34	7	22	-5
length beside is	7	-8
length beside need	-7	32
length beside need b nobody	-23	34
length beside need b person		22
length beside nothing	-6
length beside other b nobody		5
length beside other b other		8		-6
length beside run	-13	-7	-12	24
length beside undefined is other	12	-12
length beside use	-18			27
length beside use pp nobody	-12			21
length beside want	-9	22		-12
length beside work b nobody	21
length beside work pp nobody	44			-32
length beside work pp other	19	-12		-9
length beside work pp person	-31			35
length cue ate	-11			15
length cue back	21
length cue came		8		-7
length cue have	-19		49	-26
length cue lacks	25			-4
length cue need		40		-15
length cue used	-7			29
length have present behind	-6	-20	20	-10
length kept	-19	12	14	-18
length left #	-19	8		19
length left about	-6		11
length left and	-29	35
length left at	32	-7		-6
length left every	35	-13		-23
length left for	25	-4
length left get	-17	14	5
length left in	5	-18		5
length left is		-13		11
length left it's	31	-11		-4
length left need	-25	38
length left of	34	-29
length left over	31
length left the	24	-9
length left up	-20		-5	20
length more		6		-6
length name flawed	-34	28	13	-5
length named before surface				11
length named before word			-5
length named here finish	-14		7	8
length named here material	-52	48
length named here part	-6	26		-18
length named here word		8
length need modal behind	-17	28	-6
length need owed behind		15
length not ahead	5		-7	-13
length null copula behind	16
length other copula behind		-5
length other imperative behind		11
length other modal behind	-22	19
length other past behind	-29	-22	38	-20
length pointing	-20	-10	25
length right Q	34	-10		-5
length right and		17
length right down	28
length right from	15	-11
length right leave	-32	-10	40	-15
length right on	-6	6		-12
length right short		12	-9	-8
length right up		-31	-11	22
length right with	17	-24	-5
length says copula before	-17	18		5
length says copula behind	13
length says copula behind not	8			-16
length says imperative behind	5			-8
length says modal behind	-11	27
length says owed behind		12
length says past before	-23	-31		27
length says past behind	-13	-23	11	14
length says present behind	-15		10
length sized	-72	27		41
length sold so true	-18	22
length then move pp	-12	-16	33	-20
length then work b	-26	26
length then work pp	-11	-9		21
length use past behind				18
length verb be behind		-5
length verb get behind	-42		33	-15
length verb have behind	-6	-20	20	-10
length verb need behind		23
length verb null behind	16
length verb put behind	-36	6	-8	31
length verb run behind	-17	-15	-19	27
length verb use behind				18
length verb want behind	-11	22		-5
length whole clause	-14	12	-9	13
length work imperative behind	34	-13
length work past behind	-10	-22		26
list have	-28	-42	53	-43
list need	-28	57	-22	-47
many	42	-18
marked	-27	38
meant back 5	21
meant back 6	23		-17	-38
meant back 7	19	-6
meant back 8	56	-18	-36	-26
meant before more		19		-17
meant before new		-11
meant before no		17	-10
meant flawed false	34
meant flawed true		6
meant place -	11	11	-30	-38
meant ran out	-46	51		-17
more		36		-10
named before area		-7		11
named before surface	13
named before tool	-16		31	-5
named here defect	11
named here role		12
named here surface	17
named here work	23
nameless	56
next copula other comma	30	-19		-18
next copula same comma	20
next copula same stop	5
next cue ate other		24		-13
next cue back other	-4			6
next cue bought other	-14	10		-7		17
next cue bought same		-26				5
next cue came other	6	-15
next cue came same	5
next imperative same stop	17
next none same and		8
next none same run-on	45
next none same stop	44
next none same word	11
next past other stop	6
next past same and				34
next past same stop	29
next past same word	14
next present same comma	6
next present same stop	31
next present same word	27
next use buy imperative other		-7	9	4
next use buy imperative same	-29	47
next use buy modal same	-18	30
next use buy owed same	-30	20	22	-10
next use buy past other	36	-21
next use buy past same		-8			25
next use buy present same	5	9		-26
next use have imperative same	39	-27		-28
next use have present other				10
next use measure modal other	-9	-6	24	-6
next use measure owed other	-12	21		-18
next use measure past other		-16		9
next use measure past same	22
next use measure present same	11
next use move imperative other			5
next use move imperative same	29
next use move modal same			9
next use move owed same	-8		7	-4
next use move past other	18
next use move past same			7
next use move present other		22		-6
next use move present same	7			-5
next use need modal same	7
next use need past other			11
next use need present same		17		-4
next use null imperative other		-5		6
next use null imperative same			19	-11
next use null modal other		8		-10
next use null modal same	14
next use null owed same	19
next use other imperative other	8
next use other modal other			-19		13
next use other owed same	17
next use other past other		10
next use other present other		-9
next use return past other	13
next use say imperative other	21			-10
next use say modal other	21	-13
next use say modal same	14
next use say owed same					7
next use say past other	-28			24
next use say past same	38
next use say present other		22		-12
next use see imperative other		-5		8
next use see imperative same	20
next use see present other	6
next use see present same	24
next use use imperative same	-12	-20		18
next use use modal same			10	-36
next use use present other	23
next use work imperative same	6
next use work owed other		5
next use work owed same	25
next use work past other	26			-8
next use work present other	8
next verb add same	21			-6
next verb adjust same	8
next verb arrive other	8	-10		-5	11
next verb ask other	6
next verb ask same	6
next verb auger same	21			-9
next verb bend other	15
next verb bend same	18
next verb bin same	21	-8		-5
next verb blow same	33		-12
next verb bolt same	-38	-21	-6	45
next verb borrow same			12
next verb box same	13			-6
next verb bring other	17	-26
next verb bring same		15
next verb build same		-7				11
next verb buy other	19	-29	13	-11
next verb buy same	6
next verb buzz same	19
next verb call other	22			-8
next verb call same	8
next verb can same	-5			10
next verb cap same	30	-4		-8
next verb catch same	20
next verb caulk same	19
next verb change other	26	-12
next verb change same		-30			27
next verb chuck same	25	-11
next verb clamp same	28			-13
next verb clean other	19
next verb clean same	17
next verb close same				8
next verb come other		26		-17
next verb come same	24
next verb complete other		13	-15	-9
next verb correct other	14
next verb count same		-6	23	-19
next verb cover same		4
next verb crack other	22			-4
next verb crack same	21
next verb crosse other	10
next verb cut other	18
next verb cut same	14
next verb dig same	39			-8
next verb do other	-11		-22	16	18
next verb do same		11
next verb don't same	7
next verb drain same	19		-12
next verb draw same	30
next verb drill other	19			-7
next verb drill same	26
next verb drip other	-7	-19		30
next verb drip same	-7	17		-5
next verb drop other	28			-10
next verb drop same	29
next verb dry other	-5		-24	16
next verb ease same	12
next verb eat same	12
next verb either same	24			-10
next verb feather same	21
next verb feel same	10
next verb figure same	41	-15
next verb file same	15
next verb find other	17			-6
next verb find same	35			-11
next verb finish other	9		-4
next verb finish same				-5
next verb fit other	20		-4
next verb fix same	6
next verb flash same	8
next verb flip same	15
next verb float same	19
next verb forget same	-10	-11			21
next verb frame same	12
next verb fre same	11
next verb get other	14			-19
next verb give same	-12	-35		-20		34
next verb glue other	31	-10		-24
next verb go other		39		-7
next verb gonna same	23
next verb gotta same	11
next verb grab other	11
next verb grab same	-23	39
next verb grease same	10
next verb grind same	16
next verb guess same	21	-11
next verb hang same		-7		5
next verb has same	12
next verb haul same	5
next verb have other				8
next verb hit other	14			-11
next verb hit same	9
next verb hold other		-21		10
next verb hold same	33
next verb hook same		12
next verb hum other	20			-9
next verb hum same		9		-11
next verb i'll same	9
next verb jam same	22
next verb keep other	20
next verb keep same	-10	7	-4
next verb kick same	5
next verb know same	30
next verb land other	10
next verb lay other	-10	-18	-11	25
next verb lay same		6		-23
next verb leak other	12
next verb leak same	8
next verb lean same	-11	8	-9	10
next verb leave other	28	-18
next verb leave same			27
next verb let same	10
next verb level same	11
next verb lift other	15
next verb lift same		5		-4
next verb lit same				11
next verb live same	6
next verb look same	4
next verb lose same	8
next verb make other	25
next verb make same	26	-6
next verb mark same	26			-19
next verb measure same	11
next verb mention same	12	-5
next verb miss other				6
next verb miss same	18
next verb mount same	-34	22		19
next verb move other		7
next verb mud same	29			-28
next verb must same	27
next verb nail same				11
next verb notch same	14
next verb notice same	18
next verb open other	16
next verb open same	12	-12
next verb order other	-6	-30	18	9
next verb order same	-26	24		-32	11
next verb owe other	10
next verb paint same	27			-19
next verb pass other	24
next verb pass same				15
next verb patch same	39
next verb pick other	23
next verb pin same	23		-26
next verb pitch same		-14		14
next verb place same	4
next verb plane same	28
next verb plug other	8
next verb point same	18
next verb pop same		21
next verb pour same	-4	9
next verb prime other	11
next verb prime same	8
next verb pull other			5
next verb pull same	23
next verb pump same	22			-6
next verb purge other	19
next verb push same	17
next verb raise same		5		-5
next verb rate same	19			-6
next verb read same	13			-8
next verb recut same	13
next verb reglue same		5
next verb rehang same	15	-19
next verb reorder same	-30	35		-7
next verb replace other	20
next verb replace same	-17			20
next verb reroute same	31	-7		-15
next verb reset same	36
next verb return other		-6	18	-22
next verb rip same	-9			8
next verb roll same				4
next verb run other				14
next verb run same	11
next verb sand same	10
next verb say other	-17	29	-7	-16
next verb say same	13
next verb scrape same		-5		9
next verb screw same				11
next verb scribe other	5
next verb scribe same	13
next verb see other	33			-6
next verb see same	18
next verb seize other	7
next verb send other	-6	-6		15
next verb send same	-5	16
next verb shave same	20	-5
next verb shim same	31
next verb short same	-19		-23		21
next verb should same	18
next verb sign same	27
next verb sister same	32
next verb sit other		-14		21
next verb size same		-13		13
next verb skim same	28
next verb slap same	-14	15
next verb smell same	11
next verb snap same		-4		15
next verb snug same	28
next verb splice same				4
next verb split same	25	-7
next verb stain same	19			-10
next verb stand same	-9	16
next verb staple same	18			-7
next verb start other			9
next verb start same	6
next verb stay same	30			-16
next verb stick same	-11
next verb strap same	-7			13
next verb stretch same	13
next verb strip other	19	-16
next verb swap other	-6		18
next verb swear same		-12		12
next verb swing same	-18			22
next verb take other	-22	19	9	-17
next verb tell other	5	-17			7
next verb test same				5
next verb that'll same		-13			18
next verb tighten same	31
next verb top same	7	-13	6
next verb touch same	27	-16
next verb trip same	34			-11
next verb try same	39
next verb tuck same	9
next verb turn same	32			-16
next verb wait same		13		-11
next verb walk same	-15					17
next verb want other				6
next verb wash same	14
next verb weep other	-5			14
next verb will same	10
next verb wipe same	20
next verb wire same	-6			18
next verb won't same	14		-8
next verb work same	21
next verb would same	8
next verb wrap same	8	5		-9
next verb yank same	-12			16
one after have far	28	-12
one after have sentence		6
one after need far				9
one after need here	-11	26
one after need sentence	-5
one after none far	-12			8
one after none here	32
one after none sentence		6
one after used far				-15	13
one after used here		-23		14	-6	13
one beside add		9		-6
one beside ask		8
one beside be	-13		16	-8
one beside bring		10
one beside buy	-19			-18		19
one beside buy b nobody	-17	30
one beside come		7
one beside cut		-26		7
one beside do	-7	15
one beside drip	26
one beside eat		-9		7
one beside find	20			-11
one beside get	-5
one beside grab	-16	22
one beside hang	5
one beside has			9
one beside have b nobody	16
one beside have b other	25	-7
one beside have pp other	19
one beside have pp person		-8	-5	16
one beside hit	20
one beside hold	18
one beside lose	20
one beside make	24
one beside measure i other	13
one beside measure p other	33
one beside measure pp person	-5	16
one beside miss		8
one beside move b other	10			-11
one beside move pp person				8
one beside need		12
one beside need b nobody	-30	32
one beside need s nobody	7			-4
one beside need s other		11
one beside need s person		6
one beside nothing		4
one beside order	-13	6		-9	20
one beside other b nobody	-10	24
one beside other b other	-8	13		-20
one beside other b person					13
one beside other i other		17		-7
one beside other i person	30	-13		-5
one beside other p other	8	-20
one beside other p person	-15		23
one beside owe	-13			-6	21
one beside pick	20	-28			8
one beside put	-19			29
one beside rip	4
one beside say b nobody		5
one beside set	4	-8
one beside sister	-7			19
one beside sit	21
one beside stick	-9			15
one beside swap	-38	16		26
one beside take	16			-15
one beside throw		8	-6
one beside try	-5	-11	18	-16
one beside undefined has other	20
one beside undefined is other	4		8	-5
one beside undefined will person		6
one beside work b nobody	9			-21
one beside work b person	6
one beside work bpp nobody	-15			31
one beside work bpp other	20			-35
one beside work bpp person	-9			29
one beside work i other	33
one beside work i person		18		-23
one beside work p person	12
one beside work pp nobody		-11		20
one beside work pp other				6
one beside work pp person		-9		20
one beside work s other	25
one buy imperative behind	-4	17
one buy past behind	-50	-29		-25	30	17
one cue ate				12
one cue bought	-35	-11			14	16
one cue came	-30	13	14
one cue lacks	15
one cue need		42
one cue used				15
one have present behind	19
one kept	-37		24	10
one left #	-10	15
one left +	-6			5
one left about	35	-15		-14
one left add		9		-6
one left and	-21	23
one left as	30
one left at				5
one left be	-20	9	19	-15
one left bring		9
one left buy	-19			-18		19
one left by	21	-10
one left cut		-12		12
one left for		24
one left from				10
one left grab	-11	16
one left has			12
one left hit	20
one left hold	7
one left is		-21	8	-8
one left it's	-13	31	-5	-8
one left leave	13
one left like	10
one left make	14
one left me	-7	24
one left miss		9		-5
one left need		17
one left not	13
one left of	12	-9
one left off	22
one left on	11
one left order	-8			-10	21
one left over	11
one left put				9
one left rip	4
one left run		5
one left set	-8	-5		16
one left sister				12
one left stick	-10	-5		16
one left take	8	6		-17
one left that's	52	-27		-26
one left there's	52			-8
one left up	12	-24
one left use	-27			42
one left want	8
one measure modal behind	-34	38		-14
one measure present behind	17
one more	16
one move owed behind	-10	-7	-15	-21	22
one move past behind	4
one move present behind	19
one named before area	-22	22		7
one named before fixture	10	-6
one named before material	-16	8		6
one named before part	-31		-17	33	7
one named before surface	32
one named before tool	-28	5	19
one named before word	19			-9
one named here defect	21
one named here finish	-30	44		-19
one named here material	-13			10
one named here part	-50	30		22
one named here surface	54
one named here tool		20		-22
one named here word	30
one need owed behind		20
one need present behind					12
one not ahead	24
one null copula before	-27	34		-17
one null modal behind	-22	30	-13	-15
one null none no	-9	6		14
one other copula before				7
one other copula behind	6
one other imperative behind	-11	18	7	-8
one other modal behind		11
one other owed behind		4		-17
one other past before	11	5		-25
one other past behind			17	-4
one other present behind					14
one right Q	-17	11		10
one right T		15		-20	12
one right about	24
one right and	-41	40
one right are	-15	6		16
one right at			12	-8
one right before	23			-18
one right for	15	-7
one right in	-6			25
one right leave	11	-6
one right no	48	-33		-28
one right now	17	-7
one right of	11	-22		4
one right off	7
one right out	-9	10		5
one right over		-19		11
one right right	19
one right that	4	-5	6	-8
one right the	-21	11			8
one right there		12		-19
one right through	29			-9
one right to	21			-11
one right under	-8			13
one right up	8	-23
one right when				-5
one right with	8
one say imperative behind	12
one say present behind		8
one says copula before	-22	27		4
one says copula behind not	28			-7
one says imperative behind		18
one says imperative behind not	-12	-11	7	17
one says modal behind		29
one says modal behind not		12		-6
one says none no	-8			19
one says none no not		12		-10
one says owed before	13
one says owed behind		18
one says owed behind not		-23			21
one says past before	-8	11	-20
one says past behind not		-11		21
one says present before	-10				12
one says present behind not	29
one sized	-44	34
one then move b		13		-9
one then move p	22			-6
one then move pp	24	-22
one then move s	-10	16		-9
one then other b	14
one then other i	-21	9		17
one then other p		16		-21
one then undefined has	11
one then undefined will	-19	10		-16	18
one then work i	-11	-18	-7	20
one then work pp		-22		34
one then work s	4
one true		36
one use past behind	9
one verb add behind	-7	17		-5
one verb ask behind	9
one verb be before				7
one verb be behind	15
one verb bring behind	-6	18
one verb buy behind	-20			-16	8	17
one verb come behind	-9	22		-9
one verb cut behind		-18		10
one verb do behind	-6		19	-15
one verb find behind	26			-14
one verb get before		13		-24
one verb get behind	-7	6	11
one verb give behind		5
one verb glue behind	-11	10
one verb go behind		-6		-27	18
one verb grab behind	-5	14
one verb hang behind	-9			16
one verb have behind	16
one verb hit behind	12
one verb hold behind		4
one verb leave behind	11
one verb like behind	-9	17
one verb lose behind	20
one verb make behind	20
one verb need behind		10
one verb null before	-27	34		-17
one verb null no	-9	6		14
one verb order behind		-8		-6	23
one verb owe behind	-24	5	-5	-7	22
one verb pick behind	11	-13			5
one verb pull behind	4
one verb put behind	-7			17
one verb rip behind	4
one verb run behind	20			-20
one verb say behind	39	-13
one verb send behind		11		-8
one verb set behind		-7		7
one verb sister behind	-7			19
one verb stick behind	-10	-5		16
one verb swap behind	-26	24		6
one verb take behind	46	-7		-10
one verb throw behind		8	-6
one verb try behind	-5	-11	18	-16
one verb want behind	-8	11
one whole clause	-5	7
one work imperative behind		6
one work modal behind		15		-19
one work owed behind	19
one work past before	-23	12		16
one work past behind		-15		28
opens &	21
opens +		-8		17
opens alright	10
opens also		12
opens anyways	11
opens because	37
opens boss	17
opens but	11
opens cause	10
opens clause area	-24	-15	-13	46
opens clause bare	5
opens clause count	-23			15
opens clause length	-19	8		19
opens clause one	-10	15
opens clause pack	-30
opens clause volume	-20	12
opens clause weight	-32	14		21
opens like	4
opens man	15
opens now	26
opens oh	42	-13
opens ok	32	-11		-25
opens okay	14
opens or			4
opens please		26
opens plus	-8	33	-26
opens right	6
opens then	20
pack after bought here		-29	-25	-28	33
pack after bought sentence		-13	-9	-25	22
pack after have far	-22	10		-10		10
pack after have here	26			-25
pack after have sentence		19		-16
pack after need far			22	-21
pack after need here	-6	38
pack after need sentence		41		-43
pack after none far	-33
pack after none here	-24	46	-4
pack after returned far					4
pack after used far				-21
pack after used here	-17	-25		33
pack after used sentence	-31			19
pack bag	21		-4	-32
pack beside be			-23	8
pack beside bring			9
pack beside burn	-8	-4		27
pack beside buy	-17	14			8
pack beside buy b nobody		5
pack beside eat	-15	-6	-13	27
pack beside get			7	-13
pack beside go				32
pack beside grab	-34	30			5
pack beside have	-4	-6	24
pack beside have b nobody	-18		28	-10
pack beside have b person			23
pack beside is	-22	17	19	-22
pack beside leave		-6	15	-28
pack beside move p nobody	-6			23
pack beside move p other		-15	-11	24
pack beside move p person	-12			19
pack beside move pp other	29	-15	-4	-11
pack beside move pp person	-8	-13	21	-17
pack beside need b nobody		17
pack beside need b other		17
pack beside nothing	-44	6
pack beside order	12	-9
pack beside other b nobody		30
pack beside other b other	-27	39	-38
pack beside other b person	22	-19	-18
pack beside other p nobody	-18	-33			14
pack beside other p other	-25	-38		51
pack beside other p person		-31	38	-30
pack beside other pp nobody	-29	-34	15	-29	30
pack beside pick	-31	19	-13	-16	12
pack beside put	-23	11		5
pack beside run	6	-21		9
pack beside set	8	-29	-14	6
pack beside take	-40			25
pack beside undefined is other	-4	11	9	-35
pack beside use				25
pack beside use b person				17
pack beside use pp other	-16			28
pack beside use pp person				36
pack beside want		14
pack beside work b other	-6	16		-17
pack beside work b person	-9	-36	10	10
pack beside work bpp nobody	-43	23	-18
pack beside work bpp person		-37		7
pack beside work i other	6	-17	-8	5
pack beside work pp nobody	13		-13
pack beside work pp other	-13	-7	-31	38
pack beside work pp person		-40	-21	45
pack box	6	23	-7	-29
pack bucket	36			-21
pack buy imperative behind		10
pack buy modal behind	-28	33
pack can	-6	22	-20	-6
pack carton	4		-10	-11
pack coil	18	-6
pack cue ate	-28			49
pack cue back	-34			-5	24
pack cue bought	-46	-35	-46	-10	60
pack cue came	-5	-21	35	-43
pack cue have		-10	70	-11
pack cue lacks	-13	44	-25
pack cue need		63
pack cue used				18
pack flat	43	-24	-21	-12
pack have present before	11		-19	-11
pack have present behind	-13	-5	28
pack kept		-18	33
pack left #	-30
pack left +	5
pack left G	-16		-24	31
pack left Q	-30	44		-46
pack left T	-34	-36	15		21
pack left about				12
pack left and	-6	30
pack left bring	-4		16	-5
pack left buy	-19	15			9
pack left get	-46	5	29	-31
pack left grab	-26	12			12
pack left have	-22		31
pack left in	24			-6
pack left is	-22	24	9	-21
pack left leave	-8	-25	28	-25
pack left of	20	-38
pack left order	14	-11
pack left over	19	-20	-8	5
pack left put		9	-6
pack left short	-7	25	-16
pack left take	-33			25
pack left the	-14	-27	12	8
pack left there's	-25	-27	42	-22
pack left through				31
pack left up		12	-14
pack left use				14
pack left want	-21	29	-6	-6
pack left with	-4	-40	-30	34
pack length	12		-11	-18
pack list need		42	-22	-21
pack more		29	-14	-27
pack move past before	-9	-4	26
pack move past behind		-11	9	6
pack name flawed		10
pack named before area	-23	-34	-31	26		15
pack named before fixture	-7			10
pack named before part	16			-10
pack named before surface	10	-8
pack named here finish	-30	36	-15	-17
pack named here fixture		11	-6
pack named here material	-49
pack named here part	13	-8	10	-34
pack named here surface	-8	14	5	-19
pack named here word	-56		16
pack need modal behind	8	-19	18
pack need owed behind		26
pack need past before	-28	38	-23	-21
pack need present behind	-23	32		-10
pack not ahead	-32	50	-6	-12
pack null copula before	-18	27	-37
pack null copula behind	-30	9	30
pack null imperative behind	-9	21
pack null none no	-33
pack other copula before	5	-16	8
pack other copula behind	-12	9	-5	11
pack other imperative behind		24
pack other modal behind	-24	39	-10	-22
pack other past behind		-19	13		12
pack other present behind	18	-31
pack pair	8		-9	-6
pack pointing	-21	7
pack right #	-24
pack right +	-11			10
pack right Q	-5		-39	30
pack right T	-39	29	14	-6
pack right and	-31	13
pack right are	-16	-25	31	-28
pack right be		-16	-12	8
pack right by	8
pack right for	-5	19	-19
pack right from	-9	11		-37	21
pack right go	-26	-29	-39	47
pack right have	12		-19	-13
pack right in			30	-19
pack right is	16	-28	11
pack right leave			34
pack right no	34	-34	11	-22
pack right of	-20	13		9
pack right on			41	-43
pack right short	-26	44	-9
pack right sit	-18	7	10
pack right the	-29	5		7
pack right to	-28	18		-25		14
pack right up	19	-38	-20	15
pack right where	-4	-18	-12	19
pack roll		25	-20	-24
pack say imperative behind	-21	20	-32	7
pack say present behind		15	-10	-17
pack says copula behind	-23		21
pack says copula behind not	-24	35	-14	-19
pack says imperative behind	-11	51
pack says imperative behind not	8
pack says modal before	-6	8	13	-42
pack says modal behind		19	-8
pack says none no	-22
pack says owed behind		63
pack says owed behind not	28	-22
pack says past before	-23			8
pack says past behind		-6		19
pack says past behind not	-13
pack says present before		16	-10	-21
pack says present behind	-22			21
pack sheet	25		-22	-30
pack sized	-27	7
pack sold so false	-44
pack sold so true	-42
pack stick	8			-23		15
pack then move p	-27	-28	-36	50
pack then move pp			32
pack then other p		-12	-17	11	5
pack then other s		9	-6	-16
pack then undefined is		-9	24	-14
pack then undefined will	-28	30	-13
pack then work b	8	-23	-13		19
pack then work pp		-13
pack tin	6	14	-17	-14
pack tub	61	-16		-14
pack tube	-22	21		-10
pack use past behind				18
pack use present behind				36
pack verb be before	5	-16	8
pack verb be behind	-12	9	-5	11
pack verb blow behind	-8			11
pack verb bring behind			7
pack verb burn behind				13
pack verb buy behind		10			4
pack verb get behind				-7
pack verb go behind	-27			28
pack verb grab behind	-34	33
pack verb have before	11		-19	-11
pack verb have behind	-4	-6	24
pack verb leave before			26
pack verb leave behind		-26	27	-28
pack verb null before	-18	27	-37
pack verb null behind	-31	12	28
pack verb null no	-33
pack verb order behind	12	-9
pack verb pick behind	-20			-12	27
pack verb put behind	-18	21
pack verb run behind		-19		13
pack verb take behind	-48		12	14		-10
pack verb throw behind	-33		-10	-18	24
pack verb use behind				27
pack verb want behind	-19	32
pack whole clause	-53		7
pack work imperative behind		19		-22
pack work modal behind	10	6	-11	-20
pack work past before	-22	-23		27
pack work past behind	-8		-6	42
pack work present before	-27	21		-7
pack work present behind	-23			32
plural area	21	-15	-12
plural count	-19			9
plural one	-18	30
plural pointer		-7				6
plural volume	-38	12	10
plural weight	-9	14		5
pointer after need here	20	-5
pointer beside nothing	22
pointer cue need	17	-6
pointer cue used			-4	12
pointer flawed				-15		18
pointer name flawed	-7					18
pointer named before material		-12		20
pointer named before part	31	-6		-20
pointer named before word	16
pointer right #		-10		8
pointer says imperative behind	16	-6
pointer says past behind	-23		-4	19		15
pointing	-40			26
right &	-24	20		6
right '	5
right (		12		-14
right ( Q	37	-24		-12
right +	-8			12
right + Q	-18			29
right -	21
right /	-9
right / G	-10	21		-17
right @	-5	10
right @ Q	-28	15	-5	13
right Q	4
right Q #	24
right Q G				15
right Q Q	21
right Q all	18			-14
right Q is	9
right Q short	5
right T Q		-8	-9	-12	17
right T and	7
right T if	13
right T to	-17	20
right a	12			-5
right a Q		5
right about the	16	-4
right above	12
right above the	19
right across	25
right across #	18
right across the	9
right again #	4
right all Q	14
right all over	10
right all the	18
right along		-5		6
right along the		-9	-5	9
right already		-8	21	-19
right already #			11
right and		8
right and G	-8	12
right and Q	-11	28
right and a	-27	14		9
right and it		-23		9
right and no	7	-21	13	-5
right another	15
right are Q	32
right are all	30
right are at	21
right are cut	6		8	-17
right are hang	-21			24
right are in	-12	-23	13	10
right are on				19
right are shot	17
right are up	-17	-15	-10	32
right aren't		9
right around				4
right around the		-10		16
right arrive			12
right as	26			-4
right at G	9
right at Q		13		-14
right at all	16
right at the	24
right back		14		-10
right back on	-8	17		-12
right be	5
right be #	10
right be Q	13
right be loose	12
right be pack	8
right before i	8			-12
right before that		9
right before the		6
right behind G	10
right behind it	17
right below	15			-10
right bend	18
right bend #	19
right between	13
right blow	7
right bolt	15
right both	13
right bow	17
right break	8
right break #			6
right bring	20
right burn	7
right buzz	4
right by	11
right by G	30	-24
right by T		5
right by the	24
right call	7
right can	-7		6
right can go	9
right can't	11
right caulk	7
right change		-5		6
right chip	22
right clean	8
right clean #	8
right come #	24
right come Q	-32	-14	25	11
right come T	19
right come back	19
right come in				-7
right come on	5
right come out	26
right come up	20
right come with	-8	-6	29	-18
right cover	14
right crook	18			-8
right crush	11
right cut		-5		11
right cut #		-13		15
right dead	18
right dead #	19
right deliver			11	-9
right didn't	18
right do #	28
right doesn't	16	-8
right don't let			-5	8
right down #				5
right down the		4		-4
right drill	7
right drip	13
right drip #	10
right drop	5
right dry	22
right dry #	11
right dump	10
right each	-10	-26		25
right each #	-9	-12	-7	17
right eat	14
right every	23
right extra	-33		17	13
right feel	10
right finally	14
right fine	11
right finish	21
right finish #	21
right fit	-8			23
right fit #	-19	-6		29
right fix	-18	-8		26
right flash	12
right flush	25	-9
right for G	-16			17
right for Q	29			-8
right for it		16		-18
right for that	-21		21
right for the	-5		14
right get Q	29	-13		-19
right get a	25
right get its	8
right get no	-15	18
right give	-6			15
right glue	-15			27
right glue #	-10			21
right go #		-15		18
right go Q	28			-16
right go back	16
right go down	5
right go on	-14			29
right go through	30			-18
right go up	5
right gonna	8
right grout	5
right grout #	5
right hang				15
right hang #				7
right hang by	14
right has	15
right has a	10
right has no	22			-16
right hasn't	-9	15
right have Q	12
right have be	7
right have the	22	-16	-11
right have to						16
right head	-7	11
right her	6
right here	-7	-10	31
right here #	-27	-7	35	-6
right him	6
right hit	9
right hold Q	6
right hum #		4
right if				-10
right if you	17
right in #	-20	-20		71
right in G			5	-14
right in Q	28	-4
right in T	6	11		-26
right in a	7	-4
right in all	16
right in and	-24			28
right in at	21			-10
right in it		-19		8
right in my	-23	-18	36	-20
right in that	29
right in the			20	-7
right in there	4	-14	-9	15
right inside	-7	14
right is #	16
right is Q	19
right is T	15
right is all	16
right is break	32	-5		-16
right is crack	18
right is do	25
right is down				11
right is fine	23
right is finish	14
right is glue	29
right is go	-15	-11	-5	30
right is gonna	-12	19	-9
right is hang	22
right is in			5
right is miss	4
right is off	11
right is on	-18			18	8
right is only	6
right is out	24
right is run	19
right is set	11
right is short	11
right is split	21
right is still	19
right is tear	10
right is the	22
right is up				4
right isn't	5
right it	5
right it T	7
right it on	19
right it up	6
right it's	12
right just	29
right land	20
right leak	9
right leak #	14
right leave			35
right leave #	-12		39
right leave from			6
right leave in			21	-15
right leave of	7
right leave on	16			-12
right leave over			22
right like	4
right loose		-8	16	-11
right lose	12
right me	17
right me Q	19
right measure	11
right miss		6
right miss #				-6
right miss Q	20
right more		6
right more #	-31	37
right mount				6
right mount #	-10	-6		20
right move	21	-6
right my	29	-11
right nail	11
right near the	12
right need #		11		-8
right need Q	28	-17
right need T	18
right need to	18
right never	-7			11
right next	-5	20
right next #	-7	18
right next to	-5	12
right no	27
right no #	21	-23	17	-19
right no G	-42	32	-15
right nothing	15	-8
right now	4
right now #	46
right of Q	-18	7
right of it	21			-13
right of that	-5	18		-11
right of those	-4	18	-14	-18
right off	14
right off #	16
right off the				10
right on #				35
right on G	-15	12	5
right on N	6
right on Q	46			-20
right on T		23
right on a	10
right on every	29			-24
right on hand	-13	-27	33	-25
right on in	30
right on it				5
right on my	14
right on order	-28	-18		-7	50
right on site	-7	-27	28	-33
right on the	13
right only	13
right only Q	9
right open	21
right open #	9
right or	32	-18
right order				-6	15
right order #	-6			-10	25
right out #	47
right out T	-14	21
right out back	16
right out of		-27		14
right out of plumb	10
right over #	-15	-34	14	-35		23
right over Q	10
right over it	5
right pack	-10	18
right peel	-9	19
right pipe	17			-13
right pitch	8
right place	5
right place #	10
right plug	13
right pull	16
right read	11
right read Q	7
right replace	-12	-11		22
right replace #	56			-48
right return	10
right right	29
right right where	12
right rip	6
right roll	-17	-7	23	-13
right roll #	-17	-7	23	-13
right rot	-8
right run #			8	-9
right run Q	6
right sag	7
right sag #	13
right sand	5
right say Q	18
right scrape	10
right scratch						17
right screw	16
right seal		5
right seize	18
right seize #	16			-5
right send	16
right set				-8
right set #		7		-5
right short		16		-14
right short #		28		-20
right short by	-7	14
right shot	8
right shot #	8
right should	-18	22
right show up						11
right since				11
right sit			14
right sit Q	18
right sit in			13
right snap		7
right so				10
right so that				9
right some	10
right somebody	5
right sound	8
right split	25	-8		-7
right spray	18
right stain	-16	4		14
right stand				7
right start	17
right stay	11
right stick #	15
right still			36	-13
right still has	8
right still in	-27	-26	40	-18
right still to	33		-17
right stretch				4
right stuff	14
right swap				16
right swap #	-17			26
right sweat	-7	15
right take		-7				15
right take Q	21
right tear #	29
right tell	-7			13
right test	14
right test #	15
right that go	-4		16	-4
right the Q	-36	24		-8	19
right the old	-13		-9	19
right the size	8
right the top	7
right them	6
right then		-8	-7	12
right there	-5	28		-9
right there #		5
right they	16
right this	13
right those	11
right through	5
right through #	22
right through it	14
right through the				13
right til	13
right til T	6
right till T	10
right till the	20	-5
right to G	27			-10
right to Q	40
right to be		6		-4
right to corner	10
right to go	19	-12		-30
right to the						26
right to wall	12
right too		5
right top	14
right toward	9
right toward the	9
right trip	4
right turn	-8		19
right under	9
right under #	-5	-7		15
right under G	15
right under it	16		-17
right under there	19
right underneath	14
right until T	9
right until the	18
right up				13
right up #		-31		27
right up T	15
right up and	17
right up at	17
right up in				9
right up on		-11		20
right up the		-12		15
right up there	34	-23		-14
right up to	12
right use				19
right use #	-39	-11	-6	44
right want Q	10
right want the	8
right were	4
right when i			14	-6
right when you	14
right where the		-7
right which is	15
right wire	8
right wire #	14
right with	8
right with G	15
right with Q	35	-5
right with a		11
right with it	13
right with me	-7	17	-11
right with no	18
right without	18
right wobble	8
right won't	9
right wont	6
right you	22
right1 &	-24	20		6
right1 '	5
right1 (		12		-14
right1 +	-8			12
right1 -	21
right1 /	-9
right1 @	-5	10
right1 Q	4
right1 Q.	4
right1 a	12			-5
right1 above	12
right1 across	25
right1 along		-5		6
right1 already		-8	21	-19
right1 and		8
right1 another	15
right1 aren't		9
right1 around				4
right1 arrive			12
right1 as	26			-4
right1 back		14		-10
right1 be	5
right1 below	15			-10
right1 bend	18
right1 between	13
right1 blow	7
right1 bolt	15
right1 both	13
right1 bow	17
right1 break	8
right1 bring	20
right1 burn	7
right1 buzz	4
right1 by	11
right1 call	7
right1 can	-7		6
right1 can't	11
right1 caulk	7
right1 change		-5		6
right1 chip	22
right1 clean	8
right1 cover	14
right1 crook	18			-8
right1 crush	11
right1 cut		-5		11
right1 dead	18
right1 deliver			11	-9
right1 didn't	18
right1 doesn't	16	-8
right1 drill	7
right1 drip	13
right1 drop	5
right1 dry	22
right1 dump	10
right1 each	-10	-26		25
right1 eat	14
right1 every	23
right1 extra	-33		17	13
right1 feel	10
right1 finally	14
right1 fine	11
right1 finish	21
right1 fit	-8			23
right1 fix	-18	-8		26
right1 flash	12
right1 flush	25	-9
right1 give	-6			15
right1 glue	-15			27
right1 gonna	8
right1 grout	5
right1 hang				15
right1 has	15
right1 hasn't	-9	15
right1 head	-7	11
right1 her	6
right1 here	-7	-10	31
right1 him	6
right1 hit	9
right1 if				-10
right1 inside	-7	14
right1 isn't	5
right1 it	5
right1 it's	12
right1 just	29
right1 land	20
right1 leak	9
right1 leave			35
right1 like	4
right1 loose		-8	16	-11
right1 lose	12
right1 me	17
right1 measure	11
right1 miss		6
right1 more		6
right1 mount				6
right1 move	21	-6
right1 my	29	-11
right1 nail	11
right1 never	-7			11
right1 next	-5	20
right1 no	27
right1 nothing	15	-8
right1 now	4
right1 off	14
right1 only	13
right1 open	21
right1 or	32	-18
right1 order				-6	15
right1 out of plumb	10
right1 pack	-10	18
right1 peel	-9	19
right1 pipe	17			-13
right1 pitch	8
right1 place	5
right1 plug	13
right1 pull	16
right1 read	11
right1 replace	-12	-11		22
right1 return	10
right1 right	29
right1 rip	6
right1 roll	-17	-7	23	-13
right1 rot	-8
right1 sag	7
right1 sand	5
right1 scrape	10
right1 scratch						17
right1 screw	16
right1 seal		5
right1 seize	18
right1 send	16
right1 set				-8
right1 short		16		-14
right1 shot	8
right1 should	-18	22
right1 since				11
right1 sit			14
right1 snap		7
right1 so				10
right1 some	10
right1 somebody	5
right1 sound	8
right1 split	25	-8		-7
right1 spray	18
right1 stain	-16	4		14
right1 stand				7
right1 start	17
right1 stay	11
right1 still			36	-13
right1 stretch				4
right1 stuff	14
right1 swap				16
right1 sweat	-7	15
right1 t area.	25
right1 t defect.	9
right1 take		-7				15
right1 tell	-7			13
right1 test	14
right1 them	6
right1 then		-8	-7	12
right1 there	-5	28		-9
right1 they	16
right1 this	13
right1 those	11
right1 through	5
right1 til	13
right1 too		5
right1 top	14
right1 toward	9
right1 trip	4
right1 turn	-8		19
right1 under	9
right1 underneath	14
right1 up				13
right1 use				19
right1 v buy.	6	-19
right1 v other.	6
right1 v return.	16
right1 v see.	7
right1 v use.				19
right1 were	4
right1 wire	8
right1 with	8
right1 without	18
right1 wobble	8
right1 won't	9
right1 wont	6
right1 you	22
right2 (					13
right2 22	23
right2 @	-10			21
right2 N	19
right2 N.	19
right2 about	31
right2 after	15
right2 again	24
right2 all	28
right2 along	-13	19		-10
right2 an	9
right2 anything		15		-14
right2 are				4
right2 as	23
right2 back	9
right2 bad				10
right2 bathroom	20
right2 bedroom	16
right2 before	24
right2 behind	17
right2 bend				-12		10
right2 book	22	-7
right2 bore			17	-7
right2 both	17
right2 box	21
right2 break	6
right2 build	-8			15
right2 buy	-34	15		-28	17
right2 by				-8
right2 cap		10
right2 catch	10
right2 caulk	17
right2 ceiling		10		-11
right2 center	17	-13
right2 chip	9
right2 clean	6
right2 clog	6
right2 close	9
right2 cold	17
right2 corner	15
right2 cover		6		-12
right2 crack						7
right2 crook	25			-11
right2 cut	22			-7
right2 dead	14
right2 deliver	-42	14	-7	-7	19	19
right2 dig	11
right2 do		10		-11
right2 drip	27	-9
right2 drop	8
right2 dry	29			-6
right2 each	-4	8
right2 em	5
right2 empty	9
right2 end	-7	-15		16
right2 entry	21
right2 every	34			-18
right2 except	20
right2 extra	-28	9	16	-22
right2 fill	5
right2 flash	8
right2 flat	17
right2 floor	5
right2 foam	8
right2 for	-9	23
right2 from	13	-18		-28
right2 front	-25	-17		32
right2 get	-10	12
right2 gonna	-9	18	-6
right2 hall		6
right2 hand	-10	-25	32	-23
right2 hang		-18		20
right2 hard	18
right2 has	17
right2 her	5		9	-36
right2 here	25		-15
right2 hinge			9
right2 his	11
right2 hold	9
right2 hole	27			-25
right2 hollow	19
right2 home	-15		20	-4
right2 hot	20
right2 i			15	-9
right2 i'm	8
right2 in			12
right2 inside	7
right2 install	-25	-6		31
right2 into		-14	-5	13
right2 its	5
right2 just	18
right2 keep	23		-10
right2 kitchen	-10	13
right2 last	-4			14
right2 leak	30
right2 leave	-11		12
right2 level	8
right2 lift				12
right2 like	18
right2 line	7
right2 long	21
right2 look	7
right2 loose			10
right2 lose	7
right2 low	5
right2 mark	7
right2 me	6	18	-22	-15
right2 miss	9
right2 mount	-17			27
right2 move	4
right2 my	-6		34	-20
right2 nail	10
right2 need	-21	32
right2 new	33			-7
right2 no	20
right2 notch	18
right2 now			-6	25
right2 off	35
right2 oil	15
right2 old				13
right2 ones	-27	12	18
right2 only	31
right2 open				9
right2 order	-22	-5			47
right2 other	11	-21	20	-24
right2 out				10
right2 pack					12
right2 paint		10		-18
right2 pipe	14
right2 plug	25	-13
right2 pour	13
right2 pull	25
right2 put	-26			26
right2 reach	20
right2 read	28
right2 ready	5
right2 red	5
right2 replace	-19	-18		26
right2 right		7
right2 rip	13
right2 run	36			-17
right2 sand	17	-5
right2 screw	19
right2 seal	7
right2 second	13
right2 send	28	-9
right2 set	4	-5
right2 she	25	-10
right2 short	19
right2 shot	18
right2 side				11
right2 site	-7	-27	28	-33
right2 size	9
right2 so	22		-6
right2 soft	20			-13
right2 solid	13
right2 split	-32	15		20
right2 stand	12
right2 stick	13
right2 still	-16	7	-8	13
right2 stop	-23		23
right2 strip	18
right2 t defect.	6
right2 t fixture.	37
right2 t material.		8
right2 t role.	8
right2 t surface.	17
right2 t tool.	-10	-4	20
right2 t work.	30	-16
right2 take	16	-13
right2 tear	11
right2 their		-12	15	-19
right2 them	22	-11
right2 then	21
right2 there	10	-22		10
right2 this	34			-14
right2 those		8		-10
right2 though	7
right2 through	5
right2 tight	9
right2 tile			16
right2 till	13
right2 time	25
right2 to	10
right2 too	-13	21
right2 too short	25	-12		-14
right2 top	26
right2 touch	24			-9
right2 truck	6	-20		-16
right2 turn	5
right2 v buy.	-34			-26	46
right2 v need.	-17	25
right2 v say.	-8			15
right2 v see.	17
right2 wait	10		-6	-11
right2 want				9
right2 water	17
right2 we	13
right2 weep	12
right2 wet	18
right2 where	22
right2 white	-23	26
right2 without	25		-7
right2 you	27
right2 your	13
right3 N	21
right3 T	10
right3 about	32			-6
right3 above	25	-5		-13
right3 across	20
right3 after	20
right3 again	20
right3 air	25	-7		-17
right3 all	21
right3 already	18	-20		-8	11
right3 and		25
right3 anything	-10	17		-7
right3 around	-31		-9	34
right3 as	13
right3 backwards	12
right3 bag	-27	16		-22	12
right3 bar	-12			21
right3 basement	-4		17	-8
right3 bedroom				8
right3 before		13		-5
right3 behind	8
right3 belly	19
right3 bend	6	-18
right3 big	17
right3 book	-7	13
right3 both	30
right3 bottom		-13		8
right3 box	-32		30	6
right3 bracket			14
right3 can	10
right3 ceiling	36			-5
right3 cellar	7	-18	10
right3 chip						18
right3 clamp	-23	24
right3 clean	-19	16		-17		18
right3 closet	20	-9
right3 cold	11
right3 come	-5
right3 corner	22
right3 counter	-8	-17				21
right3 cut	17
right3 deep	25
right3 den	18
right3 do	9
right3 down	12
right3 drywall	6
right3 em	22
right3 end				4
right3 every	15
right3 everywhere	18
right3 except	15
right3 fine	17
right3 flat	32
right3 floor	22
right3 for	6			-23
right3 frame	20			-8
right3 front	28
right3 gas	-7			13
right3 get						12
right3 glue	28			-10
right3 good	23	-17
right3 gray	9
right3 grind			11
right3 guy	10			-8
right3 hall	30
right3 hallway	22
right3 hand	-11	5		12
right3 hang	25			-7
right3 has		7
right3 have	-22	16	12	-9
right3 he		13
right3 her	-17		12
right3 hole	14
right3 holes		-4		7
right3 house	12
right3 i	5
right3 if		12		-6
right3 into				9
right3 island	-32		15	15
right3 it	15
right3 its	16
right3 joint	19
right3 just	18
right3 kitchen	40
right3 laundry	25
right3 leave			7
right3 list		18		-19
right3 long	-10	5
right3 loose	28	-6		-19
right3 low	7
right3 me		-18	-8	17
right3 middle				4
right3 more	8
right3 nail	8
right3 new	24			-5
right3 next	11
right3 no				9
right3 not		21	-6	-13
right3 now				16
right3 off	34
right3 office	-16	-19	14	4
right3 ones		13		-4
right3 only	30
right3 open	26
right3 opened up	-5	18		-9
right3 other	33	-5
right3 outside	17
right3 over	32			-21
right3 own	25	-23
right3 pantry	-8	-12	25	-11
right3 past	6
right3 pipe	15
right3 powder room	-23		22
right3 proud	18
right3 pull	22			-12
right3 put	5
right3 right				9
right3 roof	22
right3 salon	-5			15
right3 same	15	-11
right3 say	15
right3 second				10
right3 set	19
right3 shop	-6		17
right3 short	-20	29
right3 shut	5
right3 side	25
right3 so	10
right3 solid	-16			25
right3 split	20
right3 stairs			7
right3 stand	-18			21
right3 steps	18			-7
right3 still	31		-16
right3 store		-6	14	-11	4
right3 street	13
right3 tall				8
right3 tap	12
right3 than	8
right3 them		13
right3 then	14
right3 there	12
right3 they	25	-10
right3 thing	-28	12		16
right3 those	-15	5	9
right3 though	-23	19	-5	13
right3 tile	17	-6
right3 till	14
right3 truck	-22		19	5
right3 turn	10
right3 under	16
right3 until	29	-18
right3 up	28
right3 van	-18	-22	43	-38
right3 walk	17
right3 wall	36			-15
right3 want	-24		24
right3 way					10
right3 we	13
right3 where	28
right3 which	37	-26		-15
right3 white		7		-16
right3 wire	-7	20	-6	-22
right3 with	16
right3 without		15
right3 wrap	-8	18		-8
right3 x				12
right3 you				7
says copula before not	17
says imperative before	15
says owed before	6
says owed before not	7
says past before not	13			-4
says present before not	10
sized	-13
sold so true	-43
sort area	-5		-7	15
sort pack	-16
sort pointer		-10
sort volume	-28
sort weight	-8			8
then ain't	10
then ain't is	10
then arrive			7
then arrive pp			11
then bag	-8	16		-21
then bag b	-11	18		-24	5
then balance	22
then be	7
then be p	7
then bend	32			-7
then bend pp	17
then bind	13
then bind s	6
then blow	8
then bolt	25
then bolt pp	25
then book b	12
then book pp		11		-11
then bow	29	-11
then bow pp	25	-13		-8
then box	-22		18
then box b	-29		26
then break	9
then break p	10
then bring b		10
then buy	-5	4	-17		8
then buy b	-15			-25	39
then buy pp	-14	-25	-15		31
then buzz	15
then call	11
then call b	8
then call s	7
then can't	10
then can't will	10
then caulk	7
then caulk pp	7
then change		-5		6
then change pp		-11		8
then check	22
then chew	16
then chew pp	16
then chip	26
then clean	22
then clean b	17
then clean pp	9
then clear b	5
then coat	-7	-9		16
then come bp	16
then come i					5
then come s	21
then complete	20
then complete b	14
then core	-6			15
then core b	-6			15
then cover b	-8	19
then cover s	12
then crook	17			-5
then crook pp	17			-5
then crush	11
then crush pp	11
then curl	10
then cut				16
then cut bpp				18
then deliver			11	-9
then didn't	-5	-12			20
then didn't will	-5	-12			20
then dig	12
then do b	-5	16
then do p	9
then do s	21
then drill	6
then drill pp	6
then drip	13
then drop	22	-13
then drop pp	22	-14
then dump	20
then dump s	10
then eat	6
then eat p	5			-6
then feel	9
then feel s	8
then fill	12
then finish	7
then finish pp	19
then fit	-8			23
then fit pp	-25	-9		32
then fit s	26			-9
then fix	-16	-7		25
then fix pp	-20	-10	-7	27
then flash	12
then float	11			-19
then float b		12
then flush	24
then get b	-13	21		-5
then get s	23
then give				12
then glue	-15			28
then glue pp	-15			28
then go b	6			-13
then go i	19
then go p				34
then gonna	5
then gonna will	5
then grind			7
then grind pp			9
then grout	5
then grout pp	5
then hang		-15		6
then hang b	33	-26		-19
then hang i	11
then hang pp				21
then hang s	28
then has	13
then has has	13
then hasn't		12
then hasn't has		12
then haven't			6
then haven't has			6
then head		8
then head b		9
then hit	9
then hit s	9
then hold				12
then hold b			-13	17
then hold i		-9		12
then hold pp	18
then install	24			-4
then isn't	10
then isn't is	10
then keep	22
then kick	7
then label	14
then land	29
then land b	19		-11
then land pp	20			-6
then lay pp				5
then leak	29
then leak b	4
then leave			29
then leave pp			32
then leave s			-4	11
then lift	5
then like	8
then like b	8
then look	19
then look s	11
then lose	12
then lose pp	13
then match	-9	21
then match b	-8	15
then measure	9
then measure b				19
then measure bp	16
then measure pp			16
then measure s	4
then meet	6
then miss i		7		-6
then mount				6
then mount pp				11
then move		5
then move i	19
then move p				34
then move pp			30
then nail	12
then nail pp	12
then need pp	-10	39		-18
then need s	7
then open b	28
then open pp	-13	-7	10	12
then order	-13	-14		-9	56
then order b	-21	-16		-7	52
then order pp				-5	22
then other b	17
then other pp	4
then other s	9
then own	24	-22
then own b	24	-22
then pack	-13	20
then pass	9
then patch	-16	-15		23
then peel	-9	21
then pick		4
then pipe	16			-11
then pipe pp	17			-13
then pitch	8
then pitch pp	8
then plug	9
then plug pp	9
then plumb	29	-11		-23
then pop	8
then pull	11
then pull i		14		-11
then pull pp	20
then rattle	6
then rattle s	6
then read	12
then read s	13
then replace	-10	-5		22
then replace pp	-10	-5		22
then return	10
then return s	15
then rip	9
then rip pp	9
then roll	-21	-20	15	17
then roll b	-18	-21	22
then rot	-4
then rot pp	-4
then run				-6
then run bp	23			-17
then run i			13
then run p	16
then run s		13
then sag	7
then sag s	7
then sand	17
then sand pp	17
then say b	28
then say pp	-7			24
then scrape	4
then scratch	17	-18		-9		8
then scratch b	31	-22	-7	-9
then screw	16
then screw pp	16
then scribe	17
then seal				10
then see b	26
then see pp	26			-9
then see s	11
then seize	18
then seize pp	18
then send	22
then send pp	20
then set	7
then set bpp	22
then should		13
then should will		13
then show			10
then show b	25
then show pp	-22		21			17
then show s	12
then sit			18
then sit i			19
then sit pp	-6		16	-6
then size	20
then size b	21
then snap		13
then snap pp		13
then sound	17
then sound b	18			-6
then split	25
then split bpp	25
then spray	16
then spray pp	16
then square					15
then square b					15
then squeak	17
then squeak s	14
then stain	-16	4		14
then stain pp	-16	4		14
then stand	-16			25
then start	19
then stay	11
then stick pp				12
then stick s	11
then stop				4
then stop b				11
then stretch				4
then stretch pp				8
then strip pp	5
then stuff	12
then swap				13
then swap b	25			-4
then swap pp				22
then sweat		10
then take						7
then take b	10	-16	5
then take p		-6				13
then tell	-20			27
then tell pp	-20	-6		28
then test	15
then test b	12
then test pp	9
then throw	20
then tie	13
then trip	4
then trip pp	9
then turn			13
then turn b	-9	-8	20	-7
then turn pp	18
then use				19
then use pp				27
then wait	30	-24
then wait b	29	-28
then walk	12
then walk b	13
then want b	28
then want pp	-21	21	5	-18
then weep	14
then weep i	14
then wire	9
then wire pp	9
then wobble	5
then won't	19
then won't will	19
then wont	9
then wont will	9
then work	14
then work bp	23			-17
then work p	4
then would	-14	20		-7
then would will	-14	20		-7
then wouldn't	8
then wouldn't will	8
then wrap	22
then wrap pp	20
unit L				5
unit bag	-43		15
unit bottle	18	-9	10	-37
unit box	-36
unit bucket				-26		4
unit bundle	-13			-12	15
unit can	-30		-11	44
unit case	-23		28
unit coat	82	-27	-18	-32
unit each	-45	27
unit from said	-41
unit from shared	-39	39		-7
unit gal	-16	13
unit kg	-6	-26	20
unit kit	-31		9	10
unit length	-29	-6			16
unit m			6
unit pack		6	-4	-13
unit pail	-30		-8	29
unit pair	-9		-13
unit pallet	-17	-7	26	-31
unit pt	-23		-14	5	7
unit qt	-55		34	-7
unit roll	-63		7	28
unit row	27	-31
unit set		20		-17
unit sheet	-9			31
unit sleeve	-28	16	7
unit sq ft	6	9	-16
unit sq m				14
unit square	-32			29
unit stick	-64	35
unit tin	-37	6	6	18
unit tub	-28		4
unit tube	-56	19
unit yd	-40	48		-24
use buy before	-24	13	-6		23
use buy behind		15
use buy imperative behind		26
use buy modal behind	-10	19
use buy owed before	-19	27
use buy owed behind	6
use buy past before	-20	-16	-10		29
use buy past behind	-26	-50	-8	-37	58
use have before	5
use have past behind	23		-12
use have present before	5
use measure imperative behind					5
use measure modal before	4
use measure modal behind	-27	39		-9
use measure owed before	11
use measure owed behind	8	-18
use measure past before			13
use measure present behind	24
use move imperative behind	15
use move modal before	20
use move modal behind	23
use move owed before			6
use move owed behind				-15	16
use move past before			13
use need before		7
use need behind		19
use need modal before	28	-11
use need owed before	18
use need owed behind		14
use need past before	-16	42	-13	-22
use need past behind	12
use need present behind		28
use null imperative behind	8
use null modal before		5
use null modal behind		13
use null owed before	10
use other imperative behind		32
use other past before	9
use other present before	17
use return before	13
use return behind	-25	-24		-18	-5	37
use say before	11
use say modal behind	22	-11
use say past before	34			-8
use say past behind	18
use see before	14
use see modal behind				9
use see owed before	11
use see owed behind	11
use see past behind			7
use see present behind	8
use use before	-5			31
use use behind				15
use use modal behind		23		-27
use use past before	-11	-7		33
use use past behind				14
use use present behind				32
use work imperative before	15
use work owed before	21
verb add behind	-8			9
verb add imperative	18			-15
verb add past	-40	-18	-12	42
verb adjust past	18
verb arrive before			10
verb arrive behind	-7	8	5	-6
verb arrive past			13	-6
verb ask behind	12
verb ask imperative	17
verb ask past	12
verb ask present		12
verb be past	21
verb bend before	21
verb bend behind	10
verb bend imperative	5
verb bend past	23
verb blow before	10
verb blow present	-5	15
verb bolt behind	-10	-15		22
verb bolt past	-4	-11		17
verb bow before	26	-16	-7	-11
verb box before	-4	-10	-11	19
verb box behind				9
verb box present	-9	-5		25
verb break behind	-11	15
verb break past	6	-24		6
verb bring behind	-8	23
verb bring imperative		23
verb bring modal		10
verb bring owed	18	-6
verb bring past	-28	-35	14	-29	-5	32
verb bring present	-14	21
verb bubble past	15
verb build behind	24			-10
verb build past	20			-7
verb burn behind	-8			26
verb burn past				18
verb buy before	-23	11	-18		13
verb buy behind	-8	10
verb buy imperative	-11	36
verb buy owed		12
verb buy past	-21	-31	-7	-7	29	10
verb buzz before	8
verb call present	19
verb can before	-8	5	-22	8
verb can behind		-7		11
verb can modal	-4		-10	13
verb cap behind	28			-10
verb cap past	31			-7
verb catch before	7
verb catch behind	12
verb catch modal	5
verb caulk before	7
verb caulk imperative	7
verb caulk past		5
verb center past	7
verb change before	-7	-6		19
verb change behind	-13			19
verb change imperative		8		-17
verb change past	-27	-7		30
verb change present		-15		17
verb chase imperative	9
verb check imperative	11
verb check past			9
verb check present	12
verb chip past	20
verb clean before	9
verb clean behind	13
verb clean past	8
verb clean present	19
verb clear behind				15
verb clear present	11
verb close behind	28
verb close past	7
verb close present	27
verb come behind					8
verb come modal	-21	28		-8
verb come owed	30
verb come past		-14			14
verb come present	17
verb count behind	22
verb count present	23	-10
verb cover before	23	-9		-11
verb cover present	26	-17		-13
verb crack behind	8
verb cut behind	6
verb cut imperative	10	-14
verb cut owed	19
verb deliver before			11	-9
verb dial past	24		-13	-11
verb dig behind	15
verb dig past	15
verb ding behind	17
verb ding past	25
verb do before	4		7	-8
verb do imperative			19	-6
verb do owed	8
verb do past				14
verb doesn't modal	24	-7
verb don't before	21
verb don't behind		9	-15
verb don't modal	5		-11
verb dont before	8
verb dont modal	8
verb drain before	11
verb draw behind	11			-11
verb drill before	10
verb drill behind	26
verb drill modal	13
verb drill past	23
verb drip before	4
verb drip past	15
verb drive behind				15
verb drive past				15
verb drop behind	9
verb drop past	6
verb dry before	-14		18
verb dry modal	18
verb dry owed		4
verb dump before		9
verb dump present		4
verb ease behind	27	-5
verb ease past	15
verb eat behind	10
verb eat past	18		-5
verb end past				8
verb falta behind		11	-12	-12
verb falta owed		11	-12	-12
verb feel behind	17
verb feel modal	17
verb figure behind	7	5	-6	-9
verb figure imperative	-25	31
verb figure present	27	-18	-14	-13
verb find imperative	-21	28
verb find past	18
verb finish before	5
verb finish behind				11
verb finish past	9
verb finish present				22
verb fit before	-8			25
verb fit behind	-9			24
verb fit past	-48	-15		51
verb fit present	31
verb fix before	-12	-7		24
verb fix past	-10	-12	-5	24
verb float behind		-13		8
verb flush before	-4			10
verb flush behind	9			-15
verb flush imperative	24	-10
verb flush past	8
verb foam behind				12
verb foam past				11
verb forget behind	-5	15	-5	-8
verb frame before	10
verb frame behind	19
verb frame past	19
verb fray before	14
verb fray past	14
verb fre behind	-7	-15	22	-21
verb fre past	-5	-13	21	-21
verb get imperative		45
verb get modal	33
verb get owed		8		-9
verb get past			26
verb give behind					9
verb give imperative	5
verb give past				-9	16
verb give present	11
verb glue behind				12
verb glue modal		4
verb glue owed	19
verb glue past		-7		23
verb go imperative	-10	24		-6
verb go modal	20
verb go owed				-5	10
verb go past				28
verb gotta behind	12
verb gotta owed	17
verb grab imperative		5
verb grind behind	19
verb grout before	12
verb guess behind	-13	21
verb guess present	-16	22		-9
verb hang before	-5			29
verb hang behind				21
verb hang imperative		6		-12
verb hang modal	4
verb hang owed	21
verb hang past	-22			47
verb has behind	13
verb has owed	13
verb haul past	-15	21		-9
verb have before	5
verb have past	23		-12
verb hit imperative	20
verb hit past				12
verb hold before	12
verb hold past	27
verb hold present	12
verb hook modal	13
verb i'll behind		12
verb i'll modal		12
verb install past	-10	-14	-10	23
verb keep behind	26
verb keep imperative	22
verb keep past			7
verb keep present	9
verb kill behind	11
verb kill owed	10
verb knock behind	22
verb knock past	21
verb know behind			15
verb land before					6
verb land behind	11
verb land owed	9
verb land past	24
verb land present	-6				15
verb latch before	10
verb latch modal	10
verb lay before	-5	7
verb lay behind	-25			14
verb lay modal	-4	11
verb lay past	-14			28
verb lay present	-9		19	-14
verb leak before	15
verb leave before			30
verb leave imperative	25
verb leave modal	22			-10
verb leave past			26
verb leave present	17
verb let behind	9
verb let imperative	9
verb level behind	-6			16
verb lift before	6
verb lift behind	15
verb lift past	15
verb like behind		12
verb like modal	-9	20
verb like present	13
verb listen behind	7
verb lock modal	5
verb lose before	11
verb lose modal	11
verb lose past	6
verb make before	23
verb make imperative				-5
verb mark behind	15			-5
verb mark past	19			-4
verb measure before	13
verb measure past	6
verb mention past	8
verb miss before	16
verb miss behind	-15	29
verb miss present		15
verb mix behind		-9		18
verb mix past		-11	-5	20
verb mount before	-6	-7		18
verb mount past	-34	-11	-24	41
verb move before	20	-7
verb move imperative	16
verb move modal		10
verb move owed	10
verb move past	25
verb move present	-7	-17	19
verb mud before	8
verb must behind	10
verb must owed	9
verb nail before	11
verb nail behind				10
verb nail past				5
verb need before		10
verb need behind		16
verb need modal			6
verb need owed		14
verb need past	-17	37		-9
verb nick behind	16
verb nick past	16
verb notch behind	12
verb null imperative	8
verb open before				-7
verb open past		-7
verb open present	23
verb order before	-16	7		-4	21
verb order behind		6			5
verb order imperative		4
verb order modal	-5	11
verb order past	-6	-28		-20	48
verb owe behind					16
verb owe present					16
verb pack behind		7
verb pack imperative	-16	20
verb pack past	6	-18
verb paint before	12
verb paint imperative	19
verb paint past				6
verb paint present	6
verb pass before	17
verb pass past	17
verb pass present				11
verb patch behind		4		-5
verb patch imperative	-9	17
verb patch past	24			-14
verb pick behind				-5	24
verb pick imperative		11
verb pick past		-35		-18	49
verb pick present	9
verb pipe past	19			-15
verb pitch past	11
verb plane behind	16
verb plow past	28			-23
verb plug before	22
verb plug imperative	24
verb point behind	13
verb pop behind	12			-7
verb pour behind	8
verb pour owed	11
verb prime behind	29
verb prime imperative	21
verb prime past	19			-12
verb pull before	11
verb pull behind	8
verb pull imperative	17
verb pull owed	12
verb pull past	8
verb push behind	16
verb push modal	15
verb put imperative	6
verb put modal	-7	11
verb put owed		17		-7
verb put past				14
verb put present	-22	35		-15
verb rattle before	6
verb rattle present	6
verb redo behind			7	-13
verb redo imperative	14
verb rehang behind	-7			13
verb relay behind	-6	-10		14
verb relay past	-5	-8		12
verb remind behind	12
verb remind imperative	12
verb replace before	-9			21
verb replace behind				14
verb replace past	-6			28
verb reset behind	5
verb reset imperative	5
verb return behind	-25	-24		-18	-5	37
verb return present	-9		18
verb rod behind	-8	20		-20
verb rod past	32			-19
verb roll behind	11
verb roll past	5
verb rub present	10
verb run before	16
verb run imperative		10
verb sag before	7
verb sag present	7
verb sand behind	20
verb sand imperative	21
verb sand modal	8
verb sand owed	20
verb sand past				-13
verb sand present	9
verb say imperative	25	-5
verb say modal	29	-16
verb say past			12	-11
verb scrape behind	25
verb scrape past	19			-7
verb scratch past				-4		19
verb screw before	-7			18
verb screw behind				8
verb screw past				6
verb scribe before	20
verb scribe behind	4
verb scribe modal	26	-8
verb scribe past	8
verb seal before	14
verb seal behind	5
verb seal past	10
verb seal present				6
verb seat before	5
verb seat modal	5
verb see modal				12
verb see owed	17
verb seize before	18			-6
verb seize past	18			-6
verb send before	-7	14
verb send behind	-11			-8		27
verb send modal	-7	13
verb send owed	11
verb send past	-6			-10		33
verb send present	21
verb set behind				5
verb set imperative	17			-5
verb set past				13
verb shim before	25
verb shim behind	34			-5
verb shim imperative	15
verb shim modal	14
verb shim owed	18
verb shim past	27			-10
verb ship past			14
verb short past				-8
verb should behind	-8	-14		19
verb should modal	-8	-14		19
verb show before			15	-11		6
verb show behind	15
verb show past	-14		18			10
verb show present	30			-11
verb silicone before	16
verb sister imperative				-4
verb sister past		-6		15
verb sit before	5
verb sit modal		12
verb sit owed		-22
verb sit past	13
verb sit present	5
verb size behind	23	-17
verb skim past	5
verb slam present	14
verb slide behind	9
verb snake behind	23
verb snake past	27
verb snap before	-22	31		-10
verb snap behind	11
verb snap past	-16	28		-4
verb snug behind	24			-18
verb snug past	26			-18
verb splice before				13
verb splice behind	22
verb split behind				7
verb split past	-24			27
verb squeak before	7
verb stack behind	-16	-5		24
verb stack past	-16	-5		24
verb stagger behind	-6	-6		13
verb stagger past	-4	-5		12
verb stain before	-24	22		13
verb stain behind		4		-15
verb stain past	-5	6
verb stand before				6
verb stand behind	8
verb start before	15
verb start behind	4
verb start present	7
verb stick behind				8
verb stick past	-6			17
verb stick present	17
verb stop behind	34
verb stop past	23
verb stop present	-18	-8	23	-7
verb strap behind	-20		12	10
verb strap imperative	-16		18	-15
verb strip before	10
verb strip behind	13
verb strip past	12
verb stuff behind	-24			10
verb stuff imperative	-9	7	4
verb supposed before	6
verb supposed owed	17
verb swap before	-5			24
verb swap imperative		18		-18
verb swap modal	14		-10	-17
verb swap past	-5	-6		37
verb tack behind	10
verb take before				-6		15
verb take behind	-6					29
verb take imperative		-12	17
verb take modal		15	-6	-19
verb take past	-17	-16				47
verb take present	6	-17
verb talk behind	11
verb talk present	10
verb tape before			12
verb tape behind		12
verb tape past	-13	12
verb tear before	10
verb tear past	10
verb tell before	26			-16
verb tell imperative				6
verb tell past	27			-10
verb test before	16
verb test behind	10
verb test past	15
verb text behind	8
verb text imperative	10
verb throw behind					11
verb throw imperative	-12	7		-6	16
verb throw past		-14		8
verb tie before	13
verb tie behind	31	-4		-11
verb tie past	25
verb tighten behind	12
verb tighten past	12
verb tile past	21
verb top behind	25			-5
verb touch behind	12
verb touch present	4
verb trace behind	9
verb trace past	9
verb trim before				11
verb trim behind	19
verb trim imperative	6
verb trim past	-5	-10		16
verb trip before	17
verb trip behind	6
verb trip past	15
verb try behind			8
verb try imperative	-10		17
verb try past	34
verb turn before	13
verb turn behind	34
verb turn imperative	24
verb turn past	29
verb unopen past	-34	-24	43	-34
verb use before	-5			31
verb use behind				15
verb use modal		21		-26
verb use past				26
verb use present				32
verb wacker behind	13
verb wacker past	13
verb wait before	15
verb wait behind	20	-12
verb wait present	15
verb want behind		5
verb want modal	-13	15
verb want past	6	8		-15
verb want present		19
verb wash behind	21			-11
verb wash present	7
verb weep before	15
verb weep present	12
verb weigh behind	-21		-9	17
verb weigh present	14
verb will before	16
verb will behind	27
verb will modal	31	-4
verb wipe behind	16
verb wire before	6
verb wire past	8
verb wobble before	7
verb work before	5
verb work present	8
verb would modal	-16	21		-11
verb wrap behind	21
verb wrap past	19
verb wrote behind	18
verb wrote present	18
volume after have sentence	-18	30	-15	-12
volume after need far		-24	34	-21
volume after need here	19	-4	-8
volume after need sentence	-43	34		-5
volume after none far	-49		32
volume after none sentence	-33			33
volume after used far		-29	4
volume after used sentence	-5			14
volume beside bring	-14		11
volume beside figure		13	-13	-11
volume beside get	-12	10	9	-6
volume beside go	-21		-7	32
volume beside have	-11		28
volume beside have b person	-8		25
volume beside need		27
volume beside need b nobody	4
volume beside need b person	-15	40
volume beside nothing	-23	10	20
volume beside other b nobody		8		-4
volume beside other p person	-10	-11	31	-12
volume beside pour	-28	-15	-9	36
volume beside take	16	-25		-7
volume beside use				31
volume beside use pp nobody				31
volume beside use pp person				19
volume beside work pp other	-12	-23	-20	27
volume cue ate		-15	-13	19
volume cue came	-8	-25	31	-26
volume cue have	-45	-7	65	-17
volume cue lacks		-22		8
volume cue need		12
volume cue used	-44		6	24
volume flawed	-31	14
volume have present behind	-11		28
volume kept	-19	6	16	-21
volume left #	-20	12
volume left about	24	-17		-18
volume left and	-28				22
volume left figure		13	-13	-11
volume left get	-10		16	-8
volume left have			21
volume left need	-18	51
volume left pour	-28	-15	-9	36
volume left through	-16		-6	29
volume left use				28
volume move past before	-19	-15	14	12
volume move past behind	-11			21
volume named before material	-13	-13	36
volume named before part	36	-19	-19	-18
volume named before surface	-11		-22	20
volume named before word	-29	14	19	-14
volume named here finish	-31		13	6
volume named here material	-55	8		8
volume named here word	-5	27	-6	-14
volume need owed behind		8
volume null copula behind	-24	9	10
volume null none no			9
volume other imperative behind	-15	19
volume other past behind	8	-22	9	-18
volume pointing	-25	35	-23	-26
volume right #	-39			14
volume right and	-15	25		-15
volume right in		-17	-7	10
volume right leave			19
volume right of	-16	27	-17	-10
volume right on	-32		26	-8
volume says copula behind	-35		19
volume says imperative behind	-28	45		-17
volume says modal behind	-39	8	-27	4	24
volume says none no			9
volume says owed behind		8
volume says past before	-32	4		12
volume says past behind				11
volume says present behind		-11	9	5
volume sold so true	-27		21
volume then move pp			19
volume use past behind				31
volume verb bring behind	-14		11
volume verb figure behind		13	-13	-11
volume verb get behind	-21	6
volume verb go behind	-11			21
volume verb have behind	-11		28
volume verb leave before			30
volume verb need behind		11
volume verb null behind	-24	9	10
volume verb null no			9
volume verb use behind				31
volume whole clause	-7	5	-9	7
volume work past behind	-4		-13	11
weight after need sentence		17		-28
weight after none sentence			-13
weight after used sentence	-7	-16		13
weight beside hold	19
weight beside nothing				10
weight cue have	-23	-28	26
weight cue used	-8			23
weight left #	-32	14		21
weight left at	15
weight name flawed	-12			15
weight named before material				13
weight named before word	-4	-17	-10	15
weight named here material	-28	30
weight named here word	-35	7	23
weight null copula behind	32			-11
weight null none no			-5	9
weight right #	-14			5
weight says copula behind	34			-11
weight says none no			-5	9
weight says past behind	-8	-26		20
weight says present behind	-7	-20	23	-28
weight sized	-4	8	-11
weight sold so false				7
weight verb null behind	32			-11
weight verb null no			-5	9
weight work past behind	17	-14	-8	-4
who goods modal		11
who goods owed	15
who nobody owed		16
who nobody present	-7		40	-7
who thing imperative		12
who thing owed	7
whole false		-30	19
whole true	-5
`;
