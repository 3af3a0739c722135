/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-9
after - -	-9
after all	-19
after are	23
after arrived	14
after at	10
after at the	19
after back	15
after back -	26
after bought	-7
after bought -	-12
after bracket	-9
after called	-11
after came	10
after came -	14
after cap	-12
after clears	16
after closes	-9
after closes it	-9
after come	36
after cut	24
after doesn't	5
after for	5
after for the	5
after from	13
after goes	6
after got	18
after handle	-15
after has	17
after has a	15
after have	-8
after here	-11
after i	36
after i found	-8
after in	15
after in the	-7
after is	32
after is a	-12
after is gone	-10
after is insulated	-8
after is on	10
after is the	-6
after it	-9
after it's	-6
after its	-22
after just	-10
after kit	-7
after no	-8
after not	-9
after of	8
after of the	9
after off	32
after on	-19
after on it	-7
after on the	-9
after only	-11
after over	-11
after pattern	-8
after pattern over	-8
after runs	9
after shuts	20
after still	-8
after stop	-8
after strip	-13
after strip -	-13
after the	-38
after they	-18
after tight	14
after tight -	12
after to	-7
after up	32
after wall	-6
after was	11
ahead -	41
ahead 1	-7
ahead 2nd	5
ahead a	-6
ahead back	-18
ahead big	10
ahead carpet	-6
ahead ceiling	11
ahead changing	30
ahead chute	-10
ahead cleanout	-7
ahead closet	8
ahead deck	-13
ahead desk	8
ahead fan	6
ahead fire	-8
ahead floor	-6
ahead front	-11
ahead garage	-6
ahead got	11
ahead hand	6
ahead inch	-7
ahead kitchen	-13
ahead laundry	-8
ahead nd	-13
ahead new	46
ahead of	-13
ahead on	-11
ahead one	-14
ahead pantry	7
ahead pole	7
ahead porch	-7
ahead screen	17
ahead shower	-5
ahead side	-12
ahead storm	10
ahead that	-14
ahead the	13
ahead them	15
ahead those	11
ahead toilet	-15
any	-18
asked false	-15
asked true	-7
before 0	-33
before 1	11
before 2	28
days few	6
days many	-47
days none	14
due false	-38
due true	30
end 1	-14
end 2	8
end 20	-17
end 2x4	-6
end 3	5
end 4	-8
end 8	10
end adhesive	-11
end again	-23
end all	30
end already	9
end am	7
end anchors	24
end anyhow	12
end anymore	8
end arrive	11
end back	18
end bags	-5
end bang	12
end bangs	8
end bar	-20
end basement	6
end bench	-6
end black	-7
end blades	-17
end board	5
end boards	-17
end bolt	-12
end bolts	-6
end boot	-6
end both	14
end bought	7
end box	20
end br	18
end bracket	-12
end brackets	-31
end breaker	-14
end brushed	-22
end budge	29
end bulb	-14
end butter	39
end buy	-15
end cabinet	-7
end called	-8
end came	55
end case	-6
end ceiling	-8
end cement	-19
end chain	-6
end clamps	10
end close	12
end closer	-12
end coat	19
end coats	15
end cold	11
end come	32
end complete	12
end cord	-5
end counter	-6
end cracked	-11
end cut	-5
end day	8
end days	-7
end dead	-9
end discontinued	-9
end done	5
end dover	-8
end down	-17
end drain	-10
end drawer	-15
end drip	-6
end dripping	14
end drips	-10
end drop	9
end dry	16
end each	-8
end either	-10
end em	8
end fan	-16
end far	8
end feet	-6
end fifteen	6
end filled	-21
end filters	-8
end fine	11
end finger	-10
end finished	-23
end first	16
end five	-17
end fix	10
end flat	22
end flickering	-6
end flickers	28
end flush	11
end foot	-9
end footer	-6
end for	-7
end frames	-10
end free	21
end friday	-14
end ft	-18
end gal	-8
end gang	-7
end gland	-5
end glue	6
end glued	-12
end go	-12
end god	12
end gone	12
end good	7
end grate	13
end hand	-25
end head	-7
end her	5
end him	13
end hinges	-8
end hole	7
end holes	-11
end home	-13
end hooks	10
end hot	29
end hour	-6
end hundred	-10
end in	37
end inch	-26
end inches	-7
end insulated	-9
end it	12
end itself	23
end kind	-12
end ladder	35
end late	11
end laundry	45
end level	8
end light	-13
end list	-7
end listen	9
end lit	14
end lock	-8
end loose	26
end lunch	31
end mesh	15
end mind	-10
end minutes	12
end missing	-5
end mm	-5
end moen	-10
end monday	-21
end mortar	8
end mouse	12
end move	-9
end moving	-6
end mr	-6
end new	32
end nice	11
end night	-6
end nine	16
end noon	-9
end nothing	7
end now	30
end off	-6
end oiled	-7
end old	-7
end on	45
end once	7
end one	-38
end online	-6
end open	14
end ordered	-15
end out	-25
end overnight	-12
end pack	-7
end paint	-5
end pair	-6
end paper	-7
end part	-6
end piece	-10
end pieces	16
end pinky	10
end pipe	-13
end planed	-16
end please	5
end plywood	-6
end post	-5
end posts	-5
end pretty	12
end proper	11
end quiet	34
end rack	9
end rail	10
end ready	10
end received	-6
end register	10
end required	-6
end restroom	-5
end ripped	-7
end rm	9
end rocking	24
end room	12
end run	-13
end same	-5
end sanded	30
end saturday	-8
end say	8
end says	-6
end scratch	-5
end screw	15
end screws	10
end set	-13
end shelf	26
end shelves	13
end shop	-7
end side	6
end siding	8
end silent	34
end sill	20
end sink	16
end slider	-5
end snapped	-14
end spare	-9
end split	-8
end squirrel	14
end stays	9
end steady	15
end stock	-7
end stop	-10
end store	-8
end straight	5
end stripped	-15
end stuff	-18
end summer	-7
end swapped	18
end swelled	-11
end switch	-20
end tank	-5
end tap	16
end tape	-11
end taped	16
end tested	34
end that	-17
end them	-6
end thing	28
end those	-10
end three	-5
end through	-14
end thursday	-6
end tight	47
end tightened	26
end til	-5
end tile	-19
end tiles	14
end time	-7
end tin	10
end today	-9
end tomorrow	-11
end top	18
end town	-8
end trip	11
end tube	27
end tubes	12
end tues	-9
end tuesday	-18
end twelve	-7
end two	-28
end us	9
end used	-6
end van	6
end wall	-28
end water	-7
end way	12
end wed	-6
end wednesday	-17
end white	-13
end wood	-9
end yes	-5
end yet	-18
first 1	-25
first 12	-8
first 18	-22
first 2	-30
first 3	-8
first 4	-8
first 5	-8
first 8	8
first ac	5
first also	-12
first ause	-11
first backer	25
first base	10
first basement	-19
first bath	9
first bathroom	-6
first bay	-11
first bedroom	-9
first belly	-7
first bench	21
first benny	18
first black	-10
first blind	7
first board	7
first boards	6
first boot	6
first boss	15
first both	13
first bottom	11
first bought	-9
first bowl	5
first box	11
first bracket	-7
first breaker	-8
first cabin	-12
first cabinet	16
first called	9
first carpet	-14
first ceiling	7
first chain	-9
first chair	-13
first changing	20
first chimney	-11
first clamps	9
first cleaned	22
first closer	-29
first closer's	-22
first coat	-8
first comes	-7
first complete	12
first coop	-9
first corner	-21
first cut	6
first did	14
first dining	22
first doctor	-7
first don't	-5
first door	-8
first dr	-7
first drawer	-9
first dry	-5
first ecause	-9
first edge	-5
first everything	9
first exam	13
first fan	22
first fan's	14
first fella	-5
first filled	15
first first	-16
first fished	14
first five	-7
first flat	-7
first found	26
first four	-5
first friday	-9
first garage	-14
first gasket	-6
first gate	12
first gets	15
first goes	-17
first got	-27
first grab	9
first grout	-7
first had	-6
first hall	-6
first handrail	31
first hanley	8
first have	-5
first he	-14
first he's	15
first heat	-5
first hen	-26
first her	-7
first here	-8
first hinge	-9
first hinges	16
first hood	-16
first hood's	5
first hung	-15
first hydrant	20
first i	-56
first i've	-7
first is	16
first it	9
first it's	-14
first its	-19
first just	-6
first keep	-7
first kennel	8
first kitchen	-11
first landlord	-10
first landlord's	22
first last	-5
first latches	39
first laundry	-15
first left	9
first light	7
first lobby	-11
first lock	12
first loose	-9
first lr	-6
first make	-9
first me	-20
first mine	-6
first mirror	-21
first moved	-9
first mrs	-9
first must	-9
first need	-7
first needs	-6
first new	16
first nine	-9
first no	-37
first nobody	-14
first north	-17
first nothing	28
first now	-6
first nursery	10
first o	-25
first oiled	-12
first ok	-5
first okay	20
first old	-17
first one	-50
first op	6
first opened	-10
first ordered	-6
first other	-5
first ours	-18
first oven	-14
first owner	7
first painted	19
first pantry	12
first pedal	-8
first pete	-7
first picked	-10
first pocket	-16
first pole	44
first poles	8
first porch	-15
first post	-14
first prv	6
first put	-20
first rail	-10
first rained	-8
first ran	24
first re	-11
first restroom	12
first right	10
first rollers	-8
first roof	-8
first sanded	8
first saturday	13
first scratch	-5
first screen	17
first screens	17
first second	-7
first she	-20
first she's	22
first shelf	-11
first sign's	8
first sink	16
first sir	17
first six	28
first smoke	14
first south	7
first stair	7
first still	-9
first stools	-6
first stopped	-13
first store	8
first suite	7
first tape	-8
first tested	27
first texted	9
first that	20
first that's	-19
first the	-29
first there's	-20
first they	-14
first they're	-8
first those	10
first three	-11
first threshold	22
first tile	19
first toilet	-17
first told	-9
first trim	11
first tuesday	-5
first turned	14
first two	-15
first ut	-53
first wall	-12
first wants	-10
first wash	-6
first we	-7
first window	-7
first ya	5
first you	10
first your	16
first zone	5
flaw	-17
flaw gone	30
head before	-12
head before read done	16
head before read done+fixed	17
head before read fixed	23
head before read flaw	19
head before read flaw+goods	-8
head before read goods	-28
head before read goods+plan	-5
head before read none	13
head before read plan	-52
head named	17
head named read done	22
head named read done+flaw	-17
head no	-23
head no read done+fixed	-22
head no read done+flaw	11
head no read done+plan	-26
head no read fixed	31
head no read flaw+goods	-8
head no read flaw+plan	6
head no read goods	-34
head no read goods+plan	-13
head no read none	14
head no read plan	17
head own read done	14
head own read done+fixed	20
head own read done+fixed+plan	10
head own read done+flaw	5
head own read done+plan	20
head own read flaw	-21
head own read goods	-18
head own read goods+plan	-8
head own read none	-9
head own read plan	-26
met false	30
met true	-90
named 0 head before	-22
named 0 head no	-94
named 0 head own	-28
named 1 head before	9
named 1 head named	-8
named 1 head no	29
named 1 head own	10
named 2 head named	26
named 2 head no	71
named 2 head own	20
open	8
own 0	-25
own 0 read done	30
own 0 read done+flaw	-24
own 0 read done+plan	-13
own 0 read fixed	14
own 0 read flaw+goods	-5
own 0 read goods	-23
own 0 read plan	-39
own 1	-50
own 1 read done+fixed	21
own 1 read done+fixed+plan	-13
own 1 read done+flaw	8
own 1 read done+goods	-8
own 1 read fixed	28
own 1 read flaw+goods	-9
own 1 read flaw+plan	-18
own 1 read goods	-25
own 1 read goods+plan	-10
own 1 read plan	-25
own 2	37
own 2 read done	6
own 2 read done+fixed	-18
own 2 read done+flaw	9
own 2 read fixed	23
own 2 read flaw	22
own 2 read flaw+plan	11
own 2 read goods	-26
own 2 read goods+plan	-12
own 2 read plan	-11
own 3	29
own 3 read done	6
own 3 read flaw	-24
own 3 read flaw+plan	12
own 3 read goods	-7
own 3 read none	29
own 3 read plan	15
pair 1 4	-6
pair 1 door	-9
pair 1 in	-7
pair 10 20	-7
pair 12 ft	-15
pair 18 in	-22
pair 2 door	-5
pair 2 ft	-6
pair 2 light	-12
pair 20 ft	6
pair 3 16	15
pair 3 brackets	-15
pair 3 in	-8
pair 6 ft	-7
pair a bank	-12
pair a bit	6
pair a board	10
pair a bottle	9
pair a box	-8
pair a coat	7
pair a cover	15
pair a crack	-6
pair a door	-6
pair a drop	26
pair a fire	13
pair a flapper	7
pair a gal	-7
pair a gallon	-6
pair a good	17
pair a ground	8
pair a hairline	9
pair a hole	11
pair a ladder	18
pair a latch	-11
pair a leg	21
pair a loose	27
pair a mouse	9
pair a new	-30
pair a piece	-5
pair a plate	7
pair a rod	-8
pair a scratch	-5
pair a screw	-9
pair a shelf	-6
pair a spare	-8
pair a squirrel	14
pair a truck	27
pair a twenty	-5
pair a wad	14
pair about the	29
pair account of	11
pair after all	36
pair after the	-6
pair again i	11
pair again right	-6
pair again the	-8
pair against the	11
pair all 2x4	-6
pair all day	-16
pair all four	12
pair all night	-8
pair all of	-6
pair all three	23
pair all up	7
pair along the	-5
pair also in	13
pair an eighth	5
pair answer monday	9
pair are all	-8
pair are back	8
pair are on	21
pair are stuck	12
pair are up	-9
pair as a	8
pair as the	-6
pair at gland	-5
pair at home	-13
pair at it	-9
pair at the	-10
pair back hall	10
pair back in	14
pair back of	18
pair back on	-31
pair back over	12
pair back room	-8
pair back up	-14
pair bank vault	-12
pair base cap	-5
pair base is	10
pair basement is	-7
pair basement rail	-17
pair bay 1	-7
pair bay two	11
pair beam is	5
pair bedded it	7
pair before the	11
pair behind furnace	13
pair belly tape	-7
pair bent i	-9
pair between you	5
pair big like	-6
pair board about	9
pair board back	-5
pair board i	11
pair board two	16
pair boards are	10
pair bolts i	-6
pair bolts that	5
pair bolts they	6
pair bone dry	-13
pair boss says	10
pair both the	8
pair both tubes	11
pair both valves	-7
pair bottom of	6
pair bottom seal	12
pair bought the	-7
pair bowl one	-8
pair box i	11
pair box in	-15
pair bracket in	-14
pair bracket is	11
pair brackets to	-6
pair break room	-7
pair bulletin board	-6
pair bunk room	-10
pair bunkhouse pipe	-7
pair butter now	-14
pair buy a	17
pair by eight	8
pair by itself	25
pair by ten	-5
pair by the	-24
pair cabinet i	-6
pair cabinet shop	-11
pair called the	-13
pair came in	-21
pair came off	-9
pair can't be	-8
pair can't see	23
pair caps on	-18
pair carpet tile	-9
pair ceiling in	-5
pair chain on	-7
pair chair 2	-10
pair chair one	-5
pair changing table	15
pair check for	8
pair check valve	31
pair chg rm	10
pair chute door	8
pair cistern is	10
pair clanks every	-7
pair clean the	-5
pair cleanout door	-7
pair closer arm	-24
pair closer's here	-10
pair closes it	8
pair closet door	13
pair closet doors	17
pair co alarm	-11
pair co op	-8
pair coat of	-10
pair coat on	-28
pair coat rail	13
pair coat's on	-22
pair coats of	11
pair come off	10
pair come up	-6
pair comes in	-7
pair comes off	-10
pair cord in	-7
pair could the	-6
pair counted the	-11
pair courses on	-6
pair cover is	-6
pair cover plate	16
pair cut out	-10
pair d says	-8
pair da bathroom	5
pair da whole	8
pair day room	-7
pair dead locker	7
pair deck boards	-14
pair did not	-6
pair did the	28
pair doesn't bang	12
pair doesnt want	29
pair don't get	17
pair don't have	-6
pair don't want	17
pair don't wobble	-6
pair done 10	-7
pair done for	-6
pair dont have	-5
pair door 3	7
pair door bottom	-8
pair door clears	9
pair door closer	-19
pair door closes	8
pair door doesn't	12
pair door found	-6
pair door i	-11
pair door in	-7
pair door the	6
pair door trim	-10
pair door two	8
pair door's back	-28
pair doors are	21
pair doors i	-6
pair double check	8
pair down isn't	11
pair down the	-16
pair down through	-8
pair down to	30
pair drags on	-7
pair drain had	14
pair drain hose	-10
pair drawer in	-5
pair drawer unit	-9
pair dried out	-8
pair drip is	15
pair dry after	-5
pair dry as	16
pair duct is	6
pair edge is	11
pair eight bolts	5
pair eight foot	-6
pair eight inch	-7
pair elbow stuck	-7
pair eleven feet	-8
pair elroy has	-5
pair em myself	11
pair end cap	12
pair entry the	10
pair every time	-7
pair everything in	15
pair exam 2	-6
pair exam one	12
pair except the	-10
pair fan's running	14
pair far bowl	6
pair faucet is	-10
pair faucet too	5
pair fella in	-5
pair fetch it	-5
pair fiction wall	-7
pair fill valve	-8
pair find it	8
pair find that	17
pair fine it's	-7
pair fire door	-11
pair first coat	-32
pair first thing	19
pair five minutes	16
pair flat two	13
pair floor drain	-7
pair floor i	-9
pair floor spring	-11
pair foam tape	12
pair food oil	7
pair for flat	8
pair for now	-26
pair for that	-13
pair for the	11
pair forget the	23
pair fork lift	-7
pair forty two	9
pair found a	26
pair found our	-9
pair found the	-15
pair four feet	6
pair four foot	-8
pair four lid	-5
pair fourteen by	-9
pair friday with	-5
pair from a	11
pair from our	15
pair from the	-41
pair front bedroom	-7
pair front door	-11
pair front room	-8
pair ft of	26
pair fuel shack	-6
pair furnace is	14
pair gal leaned	-7
pair garage door	-13
pair get a	-9
pair get the	12
pair gets a	-10
pair gets replaced	-8
pair getting a	-6
pair gfci bought	-6
pair gfci in	18
pair goes all	-7
pair goes back	-6
pair goes down	14
pair goes in	-8
pair goes over	-8
pair goes up	39
pair going anywhere	25
pair going in	17
pair going to	16
pair got a	-16
pair got heat	5
pair got its	42
pair got no	-10
pair got one	-7
pair got the	-34
pair got their	8
pair got two	9
pair grate clanks	-7
pair grout min	-14
pair gus the	9
pair gutter is	-10
pair had a	5
pair had in	21
pair had it	7
pair had its	-11
pair had no	-15
pair had one	34
pair had the	10
pair had two	14
pair had was	-8
pair half a	5
pair half inch	-8
pair hall i	10
pair hallway tile	5
pair hand one	13
pair hand this	-10
pair handle off	7
pair handrail bracket	-8
pair has a	-10
pair has had	-5
pair has no	-9
pair has one	-6
pair have a	-5
pair have one	-6
pair have the	8
pair he brings	-8
pair he had	5
pair he says	27
pair he wants	9
pair he was	7
pair he'll answer	9
pair he's got	-6
pair heads on	5
pair heat i	5
pair heat tape	-10
pair heater cover	-9
pair henhouse now	8
pair here right	-10
pair hinge screws	-8
pair hinge with	7
pair hinges came	36
pair his kitchen	5
pair his mind	7
pair holes in	6
pair hooked up	13
pair hose bib	-5
pair hot water	23
pair hung off	7
pair hung on	-5
pair hung the	-12
pair i bent	13
pair i bought	-7
pair i can	-7
pair i can't	-8
pair i cut	-12
pair i did	34
pair i fetch	-5
pair i forgot	-7
pair i found	-12
pair i got	-7
pair i had	60
pair i hung	-14
pair i keep	-8
pair i kicked	11
pair i looked	-8
pair i need	-10
pair i oil	7
pair i open	6
pair i opened	11
pair i picked	16
pair i pulled	-11
pair i put	22
pair i sat	17
pair i straighten	-9
pair i swapped	12
pair i think	-8
pair i thought	-7
pair i told	-8
pair i tried	6
pair i wanted	14
pair i went	-12
pair im in	-5
pair in a	-7
pair in already	-9
pair in bedroom	6
pair in behind	8
pair in brushed	-22
pair in dover	-8
pair in downstairs	9
pair in elroy	-5
pair in exam	-6
pair in front	-10
pair in her	5
pair in his	7
pair in i	25
pair in it	48
pair in my	11
pair in on	-9
pair in one	-11
pair in sterilization	10
pair in stock	-7
pair in that	11
pair in the	6
pair in there	-5
pair in too	27
pair in town	-8
pair in white	-7
pair in with	8
pair in yet	-8
pair inside of	-9
pair into the	-12
pair is a	-19
pair is back	-6
pair is bent	-20
pair is close	27
pair is cracked	-10
pair is cut	-7
pair is dry	7
pair is finish	10
pair is finished	-16
pair is gone	-12
pair is good	-23
pair is hanging	7
pair is in	54
pair is insulated	-9
pair is left	-6
pair is make	11
pair is monday	-5
pair is off	-8
pair is old	-6
pair is on	-12
pair is solid	9
pair is straight	14
pair is the	-8
pair is tuesday	-6
pair is up	32
pair isn't pretty	11
pair it again	-6
pair it ain't	-7
pair it at	-7
pair it back	-9
pair it bangs	8
pair it be	11
pair it came	-9
pair it closes	-18
pair it down	-8
pair it for	-7
pair it four	-8
pair it friday	-5
pair it gets	-15
pair it in	-11
pair it is	-10
pair it it's	-16
pair it just	-5
pair it like	11
pair it looks	14
pair it monday	-5
pair it myself	16
pair it needs	11
pair it no	-16
pair it now	7
pair it off	10
pair it on	24
pair it out	7
pair it over	10
pair it paid	-5
pair it swings	11
pair it the	-9
pair it till	-7
pair it twenty	5
pair it up	-10
pair it wants	-14
pair it with	18
pair it's a	-15
pair it's dry	10
pair it's fine	-7
pair it's in	9
pair it's just	-6
pair it's like	-9
pair it's not	10
pair it's on	21
pair it's rocking	-7
pair it's solid	-19
pair it's the	-27
pair it's up	9
pair its a	-11
pair its sitting	-13
pair its the	-21
pair its too	5
pair its two	-12
pair kicked em	11
pair kids got	5
pair landlord says	15
pair last 2	13
pair last night	17
pair last three	-5
pair last two	-10
pair lateral 2	17
pair laundry gfci	-6
pair leaking oil	-7
pair leaned on	-8
pair leave the	10
pair led tubes	-11
pair left a	6
pair left hand	-8
pair left side	10
pair leg under	21
pair lid its	-5
pair lift goes	-7
pair light by	-5
pair light done	-8
pair light on	14
pair light over	-12
pair light switch	-10
pair like a	-14
pair like butter	25
pair like that	-7
pair like the	-13
pair likes it	-8
pair lime on	-7
pair locker in	7
pair longer ones	-12
pair longer screws	-15
pair look at	-10
pair loose in	7
pair lost its	-11
pair louvre blades	-16
pair lr one	-6
pair made sure	5
pair make for	11
pair make it	-13
pair make that	-8
pair me on	-14
pair mesh tape	-11
pair metres of	-5
pair min on	-14
pair mind on	12
pair mine are	-6
pair minutes made	5
pair mirror at	-5
pair monday with	-5
pair more drip	-10
pair more holes	6
pair more neither	-6
pair more whistle	19
pair motion light	-9
pair moved it	-12
pair moved the	23
pair moves to	-9
pair mrs d	-10
pair must have	-6
pair my coat	23
pair my name	-6
pair myself the	11
pair nailed back	11
pair name on	-6
pair nd both	-13
pair nd down	-9
pair nd four	-6
pair nd gets	-8
pair nd he	-15
pair nd it	25
pair nd its	-16
pair nd my	9
pair nd now	16
pair nd on	17
pair nd one	-36
pair nd painted	-5
pair nd put	-17
pair nd sanded	12
pair nd screwed	-37
pair nd sealed	-6
pair nd she's	6
pair nd shhh	9
pair nd tested	7
pair nd that	18
pair nd the	-24
pair nd there	9
pair nd there's	-8
pair nd they	13
pair nd three	-8
pair nd uh	13
pair need one	-7
pair need to	-9
pair need two	-7
pair needs a	7
pair neither one	-6
pair nettie's shelf	21
pair never know	19
pair new door	-7
pair new elbow	-7
pair new grate	-7
pair new one	-18
pair new tiles	15
pair new washer	-12
pair newel has	-8
pair next panel	11
pair next year	11
pair no drip	-12
pair no good	-7
pair no more	31
pair no need	-11
pair no trip	18
pair nobody had	-9
pair nobody stocks	-9
pair north side's	-17
pair not a	23
pair not going	10
pair not received	-6
pair not required	15
pair not the	-10
pair not three	-12
pair notice board	-11
pair now is	5
pair now no	5
pair now she	26
pair now that	-6
pair number he'll	9
pair nursery sash	11
pair nut had	16
pair o i	-25
pair o in	-7
pair o no	-13
pair o not	15
pair o one	-16
pair o that	16
pair o that's	22
pair o the	27
pair o they	18
pair o those	-6
pair o we	-9
pair of a	-16
pair of each	9
pair of em	-16
pair of it	-13
pair of lime	-7
pair of those	-6
pair off a	7
pair off it	5
pair off its	6
pair off the	21
pair off with	-12
pair oh four	9
pair oh yeah	5
pair oil the	7
pair okay the	-7
pair old one	7
pair on a	-10
pair on about	5
pair on account	11
pair on fiction	-7
pair on grout	-14
pair on i	11
pair on in	-19
pair on it	18
pair on kids	5
pair on one	-7
pair on that	43
pair on the	-22
pair on tile	-14
pair on w	-6
pair on with	-13
pair once the	-6
pair one bag	-5
pair one behind	-6
pair one coat	-12
pair one coat's	-19
pair one finger	-19
pair one foot	-10
pair one from	6
pair one gal	-6
pair one hour	-9
pair one i	11
pair one in	10
pair one is	-12
pair one it's	-8
pair one leave	-5
pair one more	-7
pair one new	-7
pair one oh	8
pair one on	-13
pair one over	14
pair one radiator	-5
pair one sanded	8
pair one ten	-5
pair one the	-7
pair one thirty	10
pair one tube	-11
pair one up	-10
pair one was	-5
pair one with	15
pair ones in	-13
pair only had	-10
pair only in	-6
pair only two	-6
pair op one	-6
pair op two	-15
pair open the	-9
pair opened up	-9
pair opening is	7
pair order it	-7
pair our ceiling	-8
pair our side	15
pair out of	-7
pair out on	10
pair over by	6
pair over in	-9
pair over it	5
pair over the	19
pair paid i	-5
pair paint is	-5
pair paint it	-8
pair pane is	-5
pair panel down	11
pair pantry door	-8
pair pattern over	-8
pair peg rail	-10
pair picked one	8
pair picked up	-8
pair piece for	-7
pair piece of	8
pair place on	-8
pair planks are	13
pair plate rail	13
pair pocket door	-17
pair pole bracket	-8
pair pole motor	24
pair poles over	8
pair porch ceiling	-7
pair porch light	-7
pair post is	-14
pair pre k	-7
pair pulled that	-12
pair put foam	12
pair put in	11
pair put it	-21
pair put one	-13
pair put that	-14
pair put up	-10
pair quiet as	12
pair rack arm	10
pair radiator valve	-5
pair rail got	-11
pair rail she	6
pair ran a	-9
pair range is	9
pair re fix	-8
pair relief valve	-10
pair required from	15
pair reset it	5
pair restroom drain	14
pair right hand	-7
pair right now	-7
pair right side	-7
pair right where	-7
pair rocking now	-7
pair rod down	-8
pair roll of	-8
pair roll up	11
pair roof cap	-7
pair roofer is	-11
pair room it's	10
pair room lock	-6
pair room please	6
pair round the	-7
pair rubbed down	-11
pair running with	14
pair runs good	7
pair saddle rack	13
pair same trip	-6
pair sanded that	12
pair say no	18
pair says a	16
pair says forget	27
pair says he'll	16
pair says its	8
pair says leave	7
pair says no	26
pair says skip	9
pair says thats	5
pair says there's	-5
pair scratch on	-5
pair screen door	14
pair screens all	7
pair screw is	-5
pair screwed a	-18
pair screws in	19
pair second coat	-22
pair she doesnt	12
pair she has	-5
pair she wants	-7
pair she'd like	-11
pair she's got	-6
pair shhh listen	9
pair showed up	-14
pair shower 2	-10
pair shut the	-8
pair shuts like	-7
pair shuts with	9
pair side door	6
pair side steps	15
pair since i	8
pair single pole	-5
pair sitting there	-5
pair six inch	-6
pair size of	-8
pair sleeve anchors	41
pair slide is	-9
pair solid as	-13
pair solid now	-7
pair spin room	9
pair spring not	-6
pair stain block	9
pair starts monday	-5
pair still no	-9
pair stocks it	-6
pair stools don't	-6
pair stopped at	-8
pair store had	-14
pair straighten it	-9
pair strip in	-14
pair stuck down	29
pair stuck on	-7
pair suite a	7
pair supply line	-6
pair sure uh	5
pair sweep on	11
pair swim ladder's	-8
pair swings free	17
pair switch in	-8
pair table i	17
pair tack room	6
pair take that	14
pair tap handle	-19
pair tap in	17
pair tape behind	12
pair ten minutes	10
pair texted gus	9
pair thank god	12
pair that back	7
pair that black	13
pair that box	6
pair that closer's	14
pair that closet	18
pair that comes	-8
pair that door	-14
pair that drain	7
pair that flashing	-6
pair that gets	-10
pair that gouge	6
pair that hole	8
pair that new	-7
pair that one	-31
pair that one's	14
pair that wall	-13
pair that window	6
pair that's in	-8
pair that's off	9
pair that's the	-13
pair that's why	-7
pair the 2	-7
pair the 2nd	-5
pair the ac	-9
pair the back	11
pair the baseboard	13
pair the basement	12
pair the bay	-9
pair the bedroom	-7
pair the board	-8
pair the box	-11
pair the brass	-5
pair the break	-7
pair the bunkhouse	-7
pair the cable	-6
pair the cap	-8
pair the cartridge	13
pair the ceiling	-15
pair the cement	-9
pair the chair	-7
pair the check	26
pair the chute	8
pair the cistern	-6
pair the closer	9
pair the closet	19
pair the co	-9
pair the counter	15
pair the curtain	11
pair the deck	-6
pair the dimmer	6
pair the dining	-10
pair the double	8
pair the drain	-6
pair the drip	14
pair the dumpster	13
pair the end	12
pair the entry	9
pair the fan	-9
pair the faucet's	18
pair the feed	10
pair the fill	7
pair the fire	14
pair the first	-8
pair the fist	10
pair the flapper	-7
pair the flat	12
pair the floor	-29
pair the fork	-7
pair the four	15
pair the front	-10
pair the gable	26
pair the garage	7
pair the grab	-6
pair the grate	13
pair the half	16
pair the hand	10
pair the handle	7
pair the hatch	-5
pair the henhouse	8
pair the hinge	-8
pair the hood	-6
pair the hose	-17
pair the house	-10
pair the inside	-9
pair the joist	-16
pair the kit	15
pair the kitchen	-14
pair the knob	-9
pair the lady	-7
pair the landlord	-8
pair the laundry	12
pair the left	-20
pair the lid	10
pair the list	-6
pair the lobby	-14
pair the loft	24
pair the long	-7
pair the mail	14
pair the mens	14
pair the metal	5
pair the middle	-10
pair the mirror	-9
pair the new	-17
pair the newel	15
pair the next	9
pair the nut	-6
pair the old	10
pair the opener	-6
pair the opening	10
pair the other	-17
pair the outlet	-13
pair the painter	18
pair the panel	-7
pair the pantry	-12
pair the patch	-13
pair the piece	-7
pair the plate	27
pair the post	-9
pair the putty	-7
pair the rail	11
pair the range	7
pair the register	9
pair the river	-10
pair the rod	9
pair the roll	-10
pair the roof	-16
pair the sash	17
pair the seam	-8
pair the seats	-8
pair the second	-5
pair the shelves	-11
pair the side	28
pair the siding	8
pair the sink	10
pair the six	7
pair the size	-8
pair the slide	-10
pair the slides	8
pair the soap	9
pair the socket	5
pair the soft	-6
pair the spin	14
pair the spring	32
pair the stain	-6
pair the stair	-6
pair the step	13
pair the stop	-6
pair the stove	18
pair the street	8
pair the stud	-6
pair the supply	-9
pair the sweep	11
pair the switch	-8
pair the table	14
pair the tack	12
pair the tap	37
pair the three	18
pair the tile	-16
pair the tin	12
pair the toe	14
pair the toilet	12
pair the top	12
pair the track	-15
pair the track's	-6
pair the trailer	-6
pair the trim	18
pair the truck	-19
pair the tub	-7
pair the two	33
pair the upper	-8
pair the usb	8
pair the valve	-9
pair the van	-6
pair the wall	-16
pair the water	9
pair the way	16
pair the white	10
pair the whole	-17
pair the window	-19
pair the yard	-8
pair them in	-6
pair there twenty	5
pair there was	12
pair there with	6
pair there's a	-29
pair there's one	-6
pair they don't	13
pair they had	-25
pair they only	-8
pair they was	-6
pair they were	-6
pair thing is	9
pair this time	-15
pair thought it	-7
pair three by	8
pair three inch	12
pair through it	-15
pair through the	-12
pair tile all	5
pair tile discontinued	-9
pair tile pattern	-8
pair tile starts	-5
pair tiles are	-8
pair time thank	-10
pair time the	-7
pair timer on	14
pair to a	-10
pair to be	-7
pair to buy	-17
pair to come	-6
pair to friday	-7
pair to go	-7
pair to it	-6
pair to monday	-6
pair to order	-6
pair to that	17
pair to the	36
pair toe kick	8
pair toilet seat	-7
pair told him	-5
pair tomorrow when	-5
pair too far	8
pair took all	7
pair took em	-8
pair took it	-10
pair took the	6
pair top landing	6
pair track online	-6
pair track's bent	-6
pair trailer til	-5
pair tried two	-12
pair trim board	12
pair trim off	-10
pair tube used	-6
pair tuesday now	-5
pair turned the	12
pair twenty four	-9
pair twenty minutes	5
pair twenty two	-13
pair two a	-7
pair two by	-8
pair two coats	15
pair two gang	-7
pair two i	24
pair two inches	6
pair two is	25
pair two it's	-6
pair two more	-9
pair two new	24
pair two of	-17
pair two on	-5
pair two screws	19
pair two the	-17
pair two together	5
pair uh he	5
pair uh the	19
pair under nettie's	21
pair under the	-13
pair up a	-7
pair up by	6
pair up da	7
pair up in	43
pair up like	-19
pair up monday	-6
pair up now	-8
pair up on	-20
pair up one	-9
pair up over	6
pair up that	7
pair up the	-6
pair up top	7
pair upper cabinet	-7
pair urn cabinet	-6
pair usb number	9
pair ut it	-11
pair ut it's	-12
pair ut no	-12
pair vacuum breaker	-12
pair valve heads	5
pair valve on	-8
pair valve weeping	-5
pair w the	-8
pair wad in	14
pair waiting room	-7
pair waits on	-11
pair wall behind	-18
pair wall have	-7
pair wall in	7
pair wall is	-12
pair want a	-6
pair want it	16
pair want the	25
pair wants a	-13
pair wants the	-11
pair was a	30
pair was just	20
pair was nothing	11
pair was on	5
pair was out	-6
pair was the	11
pair wash area	-6
pair washer in	-7
pair washer is	11
pair water at	13
pair water board	9
pair water heater	-5
pair way to	39
pair weeping at	-8
pair went to	-12
pair were out	-7
pair when it's	-6
pair where it	8
pair while i	7
pair white timer	14
pair whole new	-6
pair window 3	-6
pair wire nut	25
pair with a	15
pair with eight	5
pair with food	7
pair with his	13
pair with me	15
pair with one	-19
pair with the	36
pair wobble no	-6
pair worn out	-5
pair would like	-9
pair would rather	10
pair ya the	5
pair yeah i	5
pair you can't	24
pair you could	9
pair you'd never	29
pair your pinky	10
pair zone valve	5
put false false	-5
put false true	-89
put true false	55
put true true	-25
rarest 1	49
rarest 1 read done head no	16
rarest 1 read done head own	15
rarest 1 read done+fixed head no	24
rarest 1 read done+fixed head own	24
rarest 1 read done+plan head no	-5
rarest 1 read done+plan head own	9
rarest 1 read fixed head before	8
rarest 1 read fixed head no	-9
rarest 1 read fixed head own	14
rarest 1 read flaw head before	16
rarest 1 read flaw head own	10
rarest 1 read flaw+goods head no	-5
rarest 1 read goods head no	-11
rarest 1 read goods head own	-7
rarest 1 read goods+plan head no	-6
rarest 1 read goods+plan head own	-7
rarest 1 read none head no	-9
rarest 1 read none head own	23
rarest 1 read plan head before	-8
rarest 1 read plan head no	-10
rarest 1 read plan head own	-28
rarest 2	-9
rarest 2 read done head no	-10
rarest 2 read done head own	-16
rarest 2 read done+fixed head no	-27
rarest 2 read done+fixed+plan head no	-11
rarest 2 read done+plan head no	-10
rarest 2 read fixed head no	29
rarest 2 read flaw head no	8
rarest 2 read flaw+plan head no	14
rarest 2 read flaw+plan head own	5
rarest 2 read goods head no	-19
rarest 2 read goods head own	-10
rarest 2 read goods+plan head no	-6
rarest 2 read none head before	13
rarest 2 read none head own	-12
rarest 2 read plan head before	-6
rarest 2 read plan head no	39
rarest 2 read plan head own	17
rarest 3	-19
rarest 3 read done head no	-19
rarest 3 read done head own	31
rarest 3 read done+flaw head no	6
rarest 3 read done+plan head own	11
rarest 3 read flaw head no	-12
rarest 3 read flaw head own	-25
rarest 3 read none head no	34
rarest 3 read plan head own	-10
rarest 4	-53
rarest 4 read done head before	17
rarest 4 read done head named	27
rarest 4 read done head own	-13
rarest 4 read done+fixed head before	17
rarest 4 read done+fixed head no	-18
rarest 4 read done+flaw head named	-17
rarest 4 read done+plan head no	-10
rarest 4 read fixed head before	14
rarest 4 read fixed head no	16
rarest 4 read fixed head own	-12
rarest 4 read flaw head own	-7
rarest 4 read flaw+goods head before	-5
rarest 4 read goods head before	-22
rarest 4 read none head own	-17
rarest 4 read plan head before	-37
rarest 4 read plan head no	-7
rarest 4 read plan head own	-6
read done flaw	17
read done work	30
read done+fixed flaw	16
read done+fixed+plan flaw	14
read done+flaw flaw	23
read done+flaw work	-29
read done+flaw+goods flaw	13
read done+goods flaw	20
read done+plan flaw	-17
read fixed flaw	54
read fixed work	5
read flaw+goods flaw	-17
read flaw+plan flaw	-9
read flaw+plan work	12
read goods flaw	-70
read goods work	-10
read goods+plan flaw	-21
read goods+plan work	-5
read none work	21
read plan flaw	-51
read plan work	-8
size long	-54
size short	25
waiting	-54
well false false	-38
well false true	-103
well true false	77
well true true	24
word 1	-65
word 10	-21
word 12	-10
word 15	-13
word 16	14
word 18	-24
word 2	-45
word 20	5
word 22	-5
word 25	26
word 2x4	-6
word 3	-10
word 30	-9
word 36	-10
word 4	-23
word 5	-24
word 6	-6
word 7	-7
word 8	-17
word a	31
word about	8
word abt	-11
word ac	-15
word account	6
word actually	-10
word after	36
word again	-67
word against	7
word ain't	8
word aint	10
word alarm	-11
word alarms	-6
word almost	6
word alone	14
word along	28
word already	19
word also	-14
word am	9
word anchors	19
word another	-7
word answer	8
word any	-6
word anyhow	11
word anymore	27
word anything	5
word anywhere	17
word apt	-9
word are	-12
word arm	-18
word around	-17
word arrived	10
word as	39
word asked	-22
word asks	-10
word at	-41
word attic	-8
word ause	-11
word baby	-12
word back	19
word backed	-13
word bad	-17
word bag	-5
word bags	-9
word ball	-13
word ballast	-5
word bang	12
word bangs	6
word bank	-12
word bar	-15
word barn	-7
word bars	-6
word base	-20
word baseboard	-5
word basement	-26
word bath	-13
word bathroom	-16
word batteries	8
word be	-13
word bead	-6
word beam	-14
word bedded	7
word bedroom	-17
word bedroom's	-11
word been	-17
word beer	-8
word before	15
word behind	21
word bell	-11
word belly	-5
word below	-15
word better	-5
word bib	-6
word big	15
word black	-7
word blade	13
word block	-13
word block's	10
word blocking	13
word blow	-9
word blue	-7
word board	-15
word board's	-7
word boards	-15
word bone	-8
word bookcase	-6
word boss	14
word both	55
word bottle	9
word bought	-15
word box	-7
word bracket	-22
word brackets	-12
word brass	-20
word break	-5
word breaker	-18
word breath	-6
word bringing	-7
word brings	-6
word broke	-7
word bronze	-6
word brother	-6
word brown	-6
word brushed	-13
word bucket	-5
word budge	27
word built	5
word bulb	-9
word bulletin	-6
word bunk	-8
word butter	25
word buy	-12
word buzzes	-7
word cabin	-7
word cable	22
word call	5
word called	-35
word cam	8
word came	50
word can	-19
word can't	32
word cant	5
word cap	13
word carpet	-11
word case	-6
word cast	-5
word caulk	-10
word ceiling	-25
word cement	-9
word chain	-11
word chair	-12
word change	8
word changed	5
word check	-10
word chg	10
word chirping	-5
word chrome	-9
word chute	7
word city	-6
word clamp	12
word clamps	6
word clanks	-7
word clean	-8
word cleaned	22
word clear	-6
word cleared	13
word clears	24
word clips	5
word close	11
word closed	-14
word closer	-27
word closer's	-7
word closes	-14
word closet	6
word closing	10
word co	-20
word coat	-22
word coat's	-15
word color	-5
word come	34
word comes	-20
word coming	-8
word company	-6
word complete	22
word cooked	14
word coop	-10
word cord	-5
word could	10
word couldn't	7
word counted	-14
word counter	-6
word couple	9
word cover	8
word covered	-6
word crack	-6
word cracked	-16
word cross	19
word crown	-6
word cut	-15
word d	-13
word da	8
word damp	-21
word days	-7
word dead	12
word deck	-10
word depot	-7
word desk	-6
word did	38
word didn't	12
word dinner	-9
word discontinued	-9
word dishwasher	-5
word dispenser	-10
word disposal	-6
word do	-31
word doctor	-9
word doesn't	16
word doesnt	28
word don't	15
word done	10
word dont	-12
word door	13
word double	-12
word dover	-8
word down	55
word downstairs	7
word dr	-8
word drag	-13
word drags	-8
word drain	-17
word drains	-9
word drawer	-40
word dried	-17
word drip	-31
word drips	-9
word driver	-9
word drop	23
word dropped	26
word dry	45
word drywall	-8
word dug	6
word dumpster	13
word ecause	-9
word edge	-27
word eight	-16
word eighteen	-11
word eighth	5
word eighths	11
word eighty	-6
word either	-13
word elbow	-6
word eleven	5
word elroy	-5
word em	16
word end	-12
word entry	-13
word everything	23
word exam	-17
word except	-11
word exit	-7
word extra	-8
word fan	-11
word far	6
word fast	13
word feet	-11
word fella	-6
word felt	19
word fetch	-5
word fifteen	10
word fifty	-8
word filled	18
word filling	9
word finally	12
word find	28
word fine	-7
word finger	-19
word finished	-34
word fire	23
word first	15
word fist	-6
word fitted	35
word five	-27
word fix	19
word fixed	17
word flange	9
word flapper	-6
word flashing	-5
word flat	21
word flickering	-6
word flight's	8
word float	-7
word flushes	-7
word flywire	-5
word foam	9
word food	7
word foot	-19
word footer	-6
word for	-72
word forget	42
word four	-35
word frame	-14
word free	17
word friday	-35
word fridge	-7
word from	-26
word front	-29
word front's	-13
word full	-11
word furnace	8
word gal	-14
word gallon	-8
word gang	-9
word garage	-7
word gate	-8
word get	-23
word gets	-12
word getting	11
word gfci	15
word give	11
word glass	-15
word glue	13
word glued	28
word go	-25
word god	12
word goes	23
word going	64
word gone	20
word gonna	5
word good	69
word got	-17
word gotta	-14
word gouge	-9
word grab	-5
word grabbed	-6
word grate	-13
word grease	27
word grille	7
word ground	-6
word grout	-9
word gutter	-11
word guy	-13
word guys	14
word h	7
word had	26
word hairline	9
word half	19
word hall	-16
word hammer	-21
word hand	-8
word handle	-36
word handrail	-9
word hangers	-6
word hanging	13
word hangs	-11
word happy	-6
word hardly	12
word hardware	-6
word has	-22
word hauling	7
word have	-19
word having	8
word he	11
word he'll	6
word he's	17
word head	12
word hear	37
word heat	-17
word heater	5
word heavy	-6
word held	17
word hen	-26
word henhouse	8
word her	33
word here	-23
word herself	-6
word hey	-8
word high	-6
word him	-11
word himself	-8
word hinge	-12
word hinges	-33
word his	-10
word hit	-11
word hold	7
word hole	10
word holes	-6
word home	-13
word hood	-8
word hooked	19
word hose	12
word hour	-9
word house	-17
word how	-7
word hundred	-13
word husband	13
word i	-6
word i'll	-24
word i'm	-12
word i've	-9
word if	-7
word ill	-13
word im	-9
word in	-11
word inch	-36
word instead	-6
word insulated	-10
word insulation	6
word into	-26
word iron	-10
word is	-20
word isn't	7
word isnt	-9
word it	38
word it'll	9
word it's	-18
word its	15
word itself	15
word job	-6
word joist	-17
word jumped	-16
word just	-23
word k	-7
word keep	-16
word keeps	-7
word kennel	7
word kick	7
word kids	5
word kind	-16
word kit	-23
word kitchen	-27
word knob	-14
word know	13
word l	-5
word ladder	17
word lady	5
word landing	7
word landlord	11
word landlord's	26
word latch	-6
word late	11
word laundry	25
word leak	-7
word leaking	-7
word leaned	-7
word leave	6
word led	-7
word left	-12
word leftover	8
word leg	18
word length	-8
word level	8
word lid	15
word light	-49
word like	56
word line	-18
word list	-11
word listen	6
word lobby	-24
word lock	-5
word locks	12
word loft	-9
word long	-11
word longer	-17
word look	-13
word looked	-12
word looking	-10
word looks	11
word loose	42
word lost	-13
word lot	-10
word love	10
word low	-6
word lowes	-8
word lr	-6
word lunch	36
word mail	-8
word make	-9
word maker	-9
word me	-12
word meanwhile	11
word measured	-6
word mess	16
word metal	8
word metres	-8
word mice	10
word middle	-10
word mill	-7
word mind	7
word mine	-6
word minutes	34
word mirror	-7
word missing	-8
word mister	19
word mixer	-6
word mm	-10
word moen	-9
word monday	-29
word more	9
word mortar	6
word motion	-9
word moved	10
word moves	-12
word moving	-7
word much	-6
word mud	11
word must	-19
word my	51
word myself	17
word nails	5
word name	-6
word need	-32
word needs	-6
word neither	-10
word nettie's	28
word never	30
word new	15
word newel	13
word nice	21
word nineteen	-10
word ninety	-8
word nipped	-9
word no	83
word nobody	-16
word noon	-7
word north	-5
word not	-13
word nothin	17
word nothing	44
word notice	-11
word now	91
word number	9
word nursery	23
word nut	12
word o	-28
word odom	8
word of	-41
word off	31
word office	-11
word oh	18
word oiled	-25
word ok	-15
word okay	25
word old	-24
word on	19
word one's	11
word ones	-9
word online	-7
word only	-33
word op	-7
word open	15
word opened	-9
word opening	-16
word opens	9
word or	-14
word order	-17
word ordered	-34
word other	-16
word ought	11
word our	-7
word ours	-15
word out	-13
word outlet	-36
word outside	-10
word outta	15
word over	21
word overnight	-12
word pack	-7
word packed	-13
word pad	-13
word paid	-6
word pail	-13
word paint	-22
word painted	-5
word painter	15
word painting	-8
word pair	-12
word pan	-7
word panel	-6
word panes	-10
word pantry	-17
word parlor	-7
word parquet	-12
word part	-8
word parts	-5
word past	22
word patch	-8
word pattern	-7
word pau	15
word peeling	-7
word peg	-9
word pest	15
word photocell	-8
word pick	-7
word piece	7
word pieces	14
word pine	-10
word pinky	10
word pipe	-6
word place	-13
word planed	-15
word plate	10
word plum	17
word plus	25
word plywood	-10
word pocket	-12
word point	-12
word popped	8
word pops	-10
word porch	-13
word post	-13
word poured	-9
word pre	-7
word pretty	12
word pull	-25
word pulled	-16
word pump	-6
word push	6
word put	13
word putting	8
word putty	-10
word quarter	-10
word quiet	30
word quit	23
word r	-8
word radiator	-8
word rail	-25
word rail's	-11
word ran	36
word rated	-7
word rather	22
word re	-10
word reads	7
word ready	10
word red	7
word redone	17
word regulator	16
word rehung	5
word relief	-10
word replace	-6
word replaced	-8
word required	7
word reset	19
word rest	24
word right	21
word ring	-6
word ripped	-11
word rocking	7
word rod	-16
word roll	-6
word rollers	-10
word rolling	13
word rolls	12
word roof	-20
word roofer	-10
word room	-11
word room's	-16
word round	-14
word rubber	5
word rubbing	-11
word run	-11
word runs	10
word rusted	-12
word s	-10
word said	-13
word sample	16
word sand	-7
word sanded	15
word sanding	9
word sash	-8
word sat	14
word say	22
word says	36
word scraped	6
word screen	-14
word screw	19
word screws	6
word seal	-11
word seam	-8
word seat	-10
word second	-22
word see	29
word seized	-7
word set	-10
word setting	6
word seven	14
word sharp	14
word she	-10
word she'd	-11
word she's	43
word shed	-11
word sheets	12
word shelf	-21
word shell	-9
word shes	26
word shhh	9
word shimmed	15
word shop	-6
word short	13
word shot	-7
word should	11
word showed	-16
word shower	-14
word shut	-17
word shuts	29
word side's	-6
word siding	10
word sign	-10
word silent	34
word since	-6
word single	-6
word sink	-18
word sits	5
word sitting	-18
word six	11
word size	-11
word skip	26
word slats	-10
word sleeve	37
word slides	8
word smoke	-11
word smooth	9
word soaked	-8
word soap	-14
word solid	-5
word some	-7
word something	6
word south	7
word spare	-13
word special	-6
word spins	7
word split	-30
word spot	22
word spring	28
word springs	-8
word square	-8
word squeak	-8
word stage	-6
word stain	-12
word stairs	-9
word start	-5
word started	-5
word starts	-5
word steady	25
word steps	14
word still	-41
word stinks	-8
word stock	-12
word stocks	-9
word stools	-7
word stop	-15
word stopped	13
word store	-29
word stove	13
word straight	20
word straighten	-9
word stringer	-11
word strip	-13
word stripped	-9
word stuck	53
word stud	-6
word stuff	17
word suite	5
word summer	-7
word supply	-29
word swapped	19
word sweep	-10
word swelled	-15
word swings	25
word switch	-36
word t	-7
word table	-19
word tack	12
word take	-18
word takes	-20
word tape	11
word taped	12
word tested	34
word texted	7
word thank	12
word thats	-11
word the	-20
word their	-7
word them	10
word there's	-32
word theres	-6
word they	-33
word they're	15
word thing	43
word thirty	12
word those	18
word though	-5
word thought	23
word three	-46
word threshold	14
word through	-18
word thru	24
word thursday	-12
word ticket	-8
word tight	58
word tightened	27
word til	-6
word tile	-15
word tiles	-5
word till	-11
word time	-11
word to	-27
word today	-5
word toe	10
word together	-7
word toggles	9
word toilet	-23
word told	-13
word tomorrow	-20
word too	22
word took	24
word top	-15
word tore	-7
word touched	7
word towel	-17
word town	-10
word track	-19
word trailer	-6
word treads	9
word treated	7
word trim	-12
word trip	12
word tripped	28
word truck	17
word true	16
word tube	27
word tubes	-9
word tuesday	-26
word turn	27
word turned	26
word turns	22
word twelve	-16
word two's	10
word uh	18
word um	-10
word under	-8
word unit	-8
word until	-8
word up	20
word upper	-11
word upstairs	34
word urn	-8
word us	18
word usb	-8
word use	-7
word ut	-53
word utility	-16
word vacuum	-9
word valves	-12
word van	17
word varnish	-7
word vault	-12
word vendor	-11
word vent	-8
word vestibule	12
word w	-8
word waiting	-10
word waits	-17
word wall	-46
word walls	-25
word want	-6
word wanted	-9
word wants	-21
word was	7
word washer	-19
word watched	-5
word water	11
word wax	14
word way	27
word we	-32
word we're	6
word weatherstrip	-10
word wed	-6
word wednesday	-24
word week	-5
word weeping	-9
word were	-9
word wet	-12
word what	-12
word when	-23
word while	10
word white	-6
word whole	-12
word why	-9
word will	-9
word window	-30
word wiped	-9
word wire	26
word wires	-6
word with	42
word wobble	-7
word won't	-6
word wont	-5
word wood	-12
word wore	5
word work	6
word works	20
word worn	-18
word would	14
word wrap	-8
word wrench	5
word wrong	-11
word x	-19
word ya	19
word yard	-13
word year	10
word yes	-10
word yesterday	19
word yet	-30
word you	21
word you'd	29
word your	13
word zone	5
`;
