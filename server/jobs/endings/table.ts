/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-10
after - -	-10
after are	22
after at	19
after at the	23
after back	11
after back up	6
after bought	-24
after bought -	-32
after called	-12
after cap	-12
after clears	11
after come	32
after cut	20
after doesn't	16
after doesn't bang	6
after down	6
after goes	6
after got	6
after had a	10
after handle	-11
after has	15
after has a	17
after here	-12
after i	-9
after i found	-6
after in	9
after is	17
after is a	-13
after is insulated	-6
after is the	-8
after it	-8
after it's	-15
after its	-12
after just	-12
after kit	-7
after need	-6
after next	-7
after not	-6
after of the	6
after off	36
after only	-8
after out	8
after out of	8
after pattern	-8
after pattern over	-8
after reads	-10
after she	23
after still	-5
after stop	-8
after strip	-17
after strip -	-17
after the	-29
after tight	23
after tight -	15
after to	-8
after two	9
after up	13
after was	8
ahead -	29
ahead a	23
ahead back	-19
ahead cleanout	-8
ahead closet	30
ahead deck	-17
ahead end	-7
ahead fire	-8
ahead floor	-7
ahead front	-16
ahead got	12
ahead inch	-6
ahead mail	7
ahead nd	-18
ahead new	35
ahead nine	-6
ahead of	-14
ahead one	-15
ahead pantry	16
ahead pocket	-15
ahead porch	-15
ahead room	14
ahead screen	6
ahead side	-12
ahead that	-18
ahead the	27
ahead them	19
ahead those	7
ahead toilet	-10
ahead window	18
any	-13
asked false	-11
before 0	-31
before 1	15
before 2	17
days few	8
days many	-48
days none	22
due false	-33
due true	33
end 1	-15
end 2	5
end 20	-20
end 2x4	-7
end 4	5
end 8	20
end adhesive	-12
end again	-11
end all	37
end already	16
end am	6
end anyhow	13
end anywhere	10
end arm	-12
end arrive	28
end back	26
end bag	-7
end bang	23
end bangs	14
end bar	-8
end battery	-9
end black	-8
end blades	-14
end board	16
end boards	-17
end bolt	-15
end both	11
end bought	24
end box	22
end br	16
end brackets	-21
end breaker	-27
end butter	24
end buy	-11
end called	-9
end came	14
end can	16
end cap	-6
end carpet	9
end cartridge	8
end cement	-19
end changed	18
end cleaned	15
end close	14
end closer	-8
end closet	15
end coat	14
end coats	14
end come	33
end cord	-11
end corded	-15
end corner	-8
end counter	-16
end cracked	-11
end day	6
end dead	-7
end deep	8
end dimmer	13
end discontinued	-9
end do	-5
end dover	-8
end down	-15
end drap	23
end drawer	-9
end dripping	14
end drips	-10
end dry	46
end either	-10
end elbow	-7
end fan	-6
end far	9
end feet	-7
end fifteen	8
end filled	-10
end finally	-15
end finger	-8
end finished	-17
end first	13
end five	-17
end flat	10
end foam	-5
end foot	-19
end footer	-8
end four	-8
end free	19
end friday	-15
end ft	-15
end gal	-6
end glue	6
end go	-17
end god	21
end gone	-6
end good	19
end grate	11
end hand	-23
end head	-7
end here	11
end him	13
end hinges	-10
end history	10
end hold	-5
end hole	-11
end holes	-12
end home	-11
end hot	45
end hour	-6
end hundred	-9
end in	23
end inch	-23
end inches	-6
end insulated	-6
end is	10
end it	23
end itself	5
end kind	-12
end ladder	25
end latch	-21
end length	-6
end level	11
end light	-11
end lights	-6
end lock	-18
end loose	27
end lunch	15
end me	-7
end monday	-19
end morning	-7
end motor	-5
end mouse	12
end moving	-7
end mud	11
end new	23
end next	-11
end nice	7
end night	-6
end no	-12
end noon	-8
end now	26
end off	-7
end on	19
end one	-20
end ones	-14
end online	-10
end only	-12
end op	-5
end open	17
end ordered	-12
end out	-28
end outlet	-7
end outside	-6
end overnight	-13
end pair	-6
end pieces	17
end pipe	-11
end place	-6
end post	-5
end pretty	9
end quit	12
end rattles	-7
end ready	11
end ring	-8
end rm	15
end room	14
end roond	21
end run	-11
end sanded	31
end saturday	-6
end screw	15
end sealed	11
end set	-12
end shelf	13
end shelves	10
end side	15
end siding	9
end slider	-8
end snapped	-14
end soldered	-9
end solid	-6
end spare	-10
end spring	-6
end squirrel	13
end steady	11
end stock	-7
end stop	-10
end store	-8
end straight	24
end strip	-6
end stripped	-19
end stuff	-6
end summer	-8
end swapped	21
end switch	-11
end tap	17
end taped	21
end tested	26
end them	-5
end there	5
end thing	25
end those	-10
end thread	7
end three	-13
end tight	34
end tile	-7
end tiles	13
end time	-7
end times	-5
end tin	9
end to	6
end today	-8
end tomorrow	-11
end too	-7
end top	19
end town	-10
end trap	-6
end trip	18
end truck	-12
end tube	31
end tues	-5
end tuesday	-14
end twelve	-8
end twice	-6
end two	-22
end us	16
end valve	7
end valves	-8
end van	-9
end wall	-32
end water	-8
end watter	23
end way	24
end wednesday	-15
end white	-11
end wood	-16
end wrong	-6
end yes	-11
end yet	-10
first 1	-12
first 2	-23
first 4	-7
first 5	-16
first 8	9
first ac	5
first also	-17
first ause	-14
first base	13
first bath	25
first bedroom	-6
first behind	14
first bench	32
first blind	6
first board	9
first boards	10
first boot	8
first bottom	13
first bought	-12
first bowl	8
first box	11
first breaker	-12
first cabinet	5
first called	9
first carpet	-9
first ceiling	6
first chapel	-6
first clamps	15
first cleaned	27
first closer	-16
first closer's	-11
first corner	-19
first cut	11
first did	11
first doctor	-7
first dryer	11
first ecause	-8
first edge	-6
first fan	13
first filled	27
first filter	29
first first	-9
first fished	13
first five	-6
first flag	11
first floor	-8
first for	-6
first found	10
first from	-8
first front	8
first garage	-7
first gate	18
first gets	12
first gfci	15
first glass	-8
first goes	-18
first got	-39
first gutter	-6
first had	-6
first handrail	28
first he	-6
first he's	15
first hen	-26
first here	-7
first hinge	-6
first hinges	33
first hood	-19
first i	-66
first i've	-10
first is	15
first its	-33
first just	-6
first kitchen	-14
first landlord	-6
first landlord's	22
first last	-18
first latch	26
first left	23
first light	12
first lock	12
first make	-7
first me	-8
first mine	-7
first mirror	-18
first moved	-10
first nd	-7
first need	-5
first nine	-7
first no	-34
first nothing	26
first now	-6
first nursery	8
first o	-27
first ok	-6
first okay	10
first old	-13
first once	-5
first one	-34
first op	11
first ordered	-5
first ours	-18
first outlet	12
first oven	-14
first pantry	6
first picked	-22
first pipe	-16
first pocket	-20
first pole	27
first poles	9
first post	-17
first pulled	11
first put	-10
first r	-15
first rail	-25
first rained	-10
first ran	31
first replace	-6
first restroom	13
first right	11
first rollers	-7
first sandbox	12
first saturday	15
first screens	13
first she	-33
first she's	22
first shelf	-11
first sign's	8
first sink	14
first six	20
first slider	9
first smoke	23
first stall	-7
first still	-11
first stopped	-16
first store	11
first swim	-7
first tap	9
first tape	-10
first texted	12
first that	18
first that's	-18
first the	-5
first them	9
first there's	-16
first they	-13
first they're	-11
first those	8
first three	-10
first threshold	16
first tiles	-16
first toilet	-5
first told	-9
first took	-7
first tread	21
first turned	12
first two	-19
first u11	-6
first ut	-51
first wall	9
first wants	-9
first washer	-7
first we	-14
first your	16
flaw	-25
flaw gone	21
flaw said false	21
flaw said true	30
head before	-15
head before read done	16
head before read done+fixed	15
head before read fixed	19
head before read flaw	15
head before read flaw+goods	-9
head before read goods	-22
head before read none	12
head before read plan	-49
head named	39
head named read done	21
head no	-32
head no read done+fixed	-21
head no read done+flaw	-11
head no read done+goods	-8
head no read fixed	37
head no read fixed+plan	12
head no read flaw	5
head no read flaw+goods	-7
head no read flaw+goods+plan	11
head no read flaw+plan	-14
head no read goods	-52
head no read goods+plan	-7
head no read none	16
head no read plan	-12
head own read done	7
head own read done+fixed	28
head own read done+flaw	-9
head own read done+plan	8
head own read flaw	-26
head own read flaw+goods	5
head own read flaw+plan	-8
head own read goods	-8
head own read none	-13
met false	32
met true	-83
named 0 head before	-16
named 0 head no	-106
named 0 head own	-20
named 1 head named	24
named 1 head no	29
named 1 head own	36
named 2 head named	16
named 2 head no	69
named 2 head own	-11
open	8
own 0	-20
own 0 read done	19
own 0 read done+fixed	12
own 0 read done+flaw	-22
own 0 read done+plan	16
own 0 read fixed	20
own 0 read flaw+goods	-6
own 0 read goods	-27
own 0 read none	-15
own 0 read plan	-27
own 1	-55
own 1 read done	12
own 1 read done+flaw	-13
own 1 read done+flaw+goods	10
own 1 read done+goods	-12
own 1 read fixed	9
own 1 read fixed+plan	12
own 1 read flaw	-10
own 1 read flaw+goods	-9
own 1 read flaw+goods+plan	11
own 1 read flaw+plan	-14
own 1 read goods	-26
own 1 read goods+plan	-8
own 1 read plan	-34
own 2	27
own 2 read done+plan	-13
own 2 read fixed	28
own 2 read flaw	14
own 2 read flaw+plan	-7
own 2 read goods	-23
own 2 read none	7
own 3	39
own 3 read done	10
own 3 read done+flaw	17
own 3 read flaw	-11
own 3 read goods	-6
own 3 read none	18
pair 1 in	-8
pair 12 ft	-13
pair 2 ft	-6
pair 3 8	9
pair 6 ft	-6
pair 8 in	6
pair a bead	-6
pair a board	10
pair a crack	-6
pair a door	-6
pair a drap	23
pair a fire	11
pair a gal	-6
pair a ground	6
pair a hole	14
pair a latch	-12
pair a leg	10
pair a mouse	10
pair a new	-19
pair a piece	9
pair a plate	9
pair a screw	-14
pair a shelf	-7
pair a spare	-9
pair a squirrel	13
pair a truck	18
pair a wad	13
pair about 2	-6
pair about a	-7
pair about his	13
pair about the	28
pair ac guy	-8
pair after all	26
pair after the	-6
pair again the	-7
pair against the	9
pair all 2x4	-7
pair all day	-11
pair all four	8
pair all of	-14
pair all the	-6
pair all three	22
pair along the	-9
pair also got	-6
pair also the	-6
pair an inch	-7
pair anchor cement	-12
pair another tap	-5
pair answer monday	12
pair are all	-8
pair are both	-7
pair are on	36
pair are rolling	15
pair are stripped	-6
pair are stuck	6
pair around on	-5
pair around the	-10
pair as a	18
pair as the	-9
pair at all	10
pair at home	-11
pair at it	-9
pair at the	-10
pair back in	14
pair back of	10
pair back on	-43
pair back room	-10
pair back to	-6
pair back up	10
pair ballast in	-13
pair base is	9
pair bay two	10
pair before the	14
pair behind furnace	14
pair behind it	-6
pair behind the	12
pair bench is	16
pair big door	9
pair board about	9
pair board on	-7
pair board two	14
pair boards are	19
pair boards down	-6
pair bone dry	8
pair both in	-9
pair both sashes	-11
pair both sides	12
pair both valves	-12
pair bought the	-12
pair bowl one	-8
pair box in	-13
pair box is	-8
pair box of	-8
pair bracket in	-17
pair bracket is	10
pair by eight	9
pair by itself	9
pair by six	-9
pair by the	-12
pair cabinet shop	-8
pair called tank	-6
pair called the	-9
pair came in	-18
pair can't be	-7
pair can't see	22
pair caps on	-29
pair carpet tile	-9
pair cart is	10
pair cartridge all	-6
pair ceiling tile	-13
pair chain on	-11
pair chapel doors	-6
pair check for	10
pair check valve	29
pair chute door	14
pair cistern is	7
pair cleanout door	-8
pair closer arm	-25
pair closer's here	-11
pair closes it	14
pair closet door	8
pair closet doors	15
pair closet rod	10
pair co op	-9
pair coat of	-13
pair coat on	-12
pair coats of	6
pair come loose	-6
pair come off	16
pair come up	-6
pair comes in	-10
pair corner is	-6
pair could the	-7
pair cut out	-9
pair da bathroom	6
pair damp about	-6
pair day door's	6
pair deck boards	-18
pair did it	8
pair did the	19
pair dining room	8
pair doesn't bang	23
pair doesnt want	17
pair don't get	13
pair don't have	-6
pair door 3	5
pair door clears	11
pair door closer	-18
pair door closes	14
pair door doesn't	23
pair door found	-10
pair door i	-12
pair door in	-8
pair door stop	-7
pair door the	8
pair door trim	-10
pair door's back	-28
pair door's rehung	6
pair doors are	13
pair double check	10
pair down to	31
pair drags on	-6
pair drain had	13
pair dried out	-6
pair dry as	11
pair dry at	8
pair each meanwhile	11
pair eight foot	-7
pair eight inch	-6
pair end cap	12
pair exam one	9
pair exam two	-8
pair exit sign	-6
pair far bowl	7
pair fill valve	-11
pair find that	18
pair finger like	6
pair finish is	16
pair fire door	-10
pair first coat	-20
pair first job	6
pair first thing	21
pair fist was	11
pair five minutes	9
pair flag light	11
pair flat two	15
pair floor drain	-9
pair floor guide	-5
pair floor i	-10
pair floor reads	-13
pair for a	5
pair for flat	10
pair for now	-23
pair for that	-11
pair for the	8
pair forget the	22
pair found a	24
pair found at	7
pair found our	-8
pair found the	-17
pair fourteen by	-9
pair from a	12
pair from my	12
pair from our	11
pair from the	-37
pair front door	-13
pair ft along	-6
pair ft of	21
pair full of	8
pair furnace is	14
pair garage door	-8
pair gave me	8
pair get a	7
pair get the	11
pair get to	-6
pair gets a	-13
pair gets replaced	-10
pair getting a	-10
pair gfci in	24
pair goes all	-15
pair goes in	-9
pair goes over	-7
pair goes up	37
pair going anywhere	32
pair going in	16
pair going to	17
pair good too	15
pair good while	-9
pair got 1	-7
pair got a	-18
pair got at	-6
pair got both	-11
pair got in	-6
pair got it	6
pair got its	29
pair got the	-28
pair got two	9
pair gus the	12
pair gutter is	-11
pair guy came	-8
pair h window	-15
pair had a	11
pair had another	-5
pair had no	-13
pair had one	37
pair had the	-5
pair had to	-8
pair had was	-11
pair half inch	-6
pair half of	-5
pair half the	7
pair hand one	11
pair hand this	-11
pair hardware store	-6
pair has gone	10
pair has one	-7
pair have it	-5
pair have one	-6
pair have the	8
pair he had	7
pair he says	36
pair he wants	8
pair he'll answer	12
pair henhouse now	9
pair here right	-11
pair hinges came	42
pair his mind	6
pair holes are	-7
pair hot water	9
pair hung on	-8
pair hung the	-10
pair i bent	23
pair i can	-13
pair i can't	-9
pair i cut	-21
pair i did	38
pair i found	-8
pair i gave	-7
pair i got	-5
pair i gotta	-5
pair i had	49
pair i hung	-15
pair i keep	-6
pair i looked	-9
pair i opened	15
pair i picked	8
pair i pulled	-11
pair i ran	-13
pair i screwed	-10
pair i stuck	23
pair i think	-8
pair i told	-9
pair i tried	7
pair i wanted	12
pair i was	7
pair in a	-14
pair in already	-7
pair in at	-7
pair in back	-16
pair in bedroom	9
pair in behind	9
pair in dover	-8
pair in flat	-6
pair in his	12
pair in i	14
pair in it	37
pair in my	10
pair in now	-7
pair in on	-5
pair in stock	-7
pair in that	10
pair in the	11
pair in there	7
pair in three	-6
pair in too	18
pair in town	-10
pair in white	-7
pair inside of	-8
pair into the	-6
pair is a	-17
pair is bent	-13
pair is close	28
pair is cracked	-7
pair is cut	8
pair is damp	-6
pair is done	-12
pair is finish	15
pair is finished	-6
pair is gone	-12
pair is good	-26
pair is hanging	7
pair is history	10
pair is in	45
pair is insulated	-6
pair is monday	-5
pair is off	-7
pair is old	-7
pair is open	-8
pair is solid	8
pair is straight	17
pair is stripped	-9
pair is the	-9
pair is tuesday	-8
pair is up	36
pair it ain't	-7
pair it back	6
pair it bangs	14
pair it came	-16
pair it closes	-12
pair it down	-5
pair it for	-6
pair it four	-9
pair it gets	-17
pair it it's	-11
pair it like	9
pair it needs	11
pair it no	-10
pair it now	-8
pair it off	25
pair it on	24
pair it out	5
pair it over	7
pair it till	-5
pair it twice	-12
pair it wants	-9
pair it with	16
pair it's a	-12
pair it's five	-6
pair it's just	-10
pair it's like	-16
pair it's meant	6
pair it's not	11
pair it's on	40
pair it's solid	-15
pair it's the	-30
pair it's up	11
pair its a	-12
pair its mud	11
pair its on	-18
pair its sitting	-13
pair its the	-16
pair its too	6
pair job of	6
pair ladder bolt	-9
pair ladder's good	-7
pair last night	15
pair last three	-6
pair last two	-8
pair lateral 2	19
pair leaned on	-5
pair leave it	-10
pair leave the	23
pair left hand	-6
pair left side	7
pair leg under	10
pair lid shuts	12
pair light over	-7
pair like a	7
pair like butter	19
pair like it	11
pair like it's	6
pair like new	23
pair like the	-18
pair likes it	-7
pair looked at	-7
pair mail cart	7
pair make it	-9
pair make that	-7
pair meant to	6
pair meanwhile the	11
pair mens i	-8
pair mind on	6
pair mine are	-7
pair monday now	-5
pair monday when	-6
pair monday with	-5
pair more whistle	13
pair moved it	-10
pair moved the	9
pair moves to	-8
pair mrs d	-10
pair must have	-6
pair my coat	20
pair nd for	-7
pair nd gets	-11
pair nd he	-13
pair nd i	-14
pair nd it	31
pair nd it's	-15
pair nd its	-11
pair nd my	7
pair nd no	23
pair nd one	-38
pair nd put	-21
pair nd screwed	-16
pair nd sealed	9
pair nd she	-6
pair nd she's	6
pair nd the	-13
pair nd there's	-12
pair nd theres	-6
pair nd three	8
pair nd took	25
pair nd two	-14
pair need one	-5
pair need to	-6
pair needs a	8
pair nettie's shelf	10
pair never know	18
pair never mind	13
pair new cord	11
pair new door	-6
pair new one	-9
pair new ones	-6
pair new tiles	13
pair next door	-7
pair no a	23
pair no drip	-6
pair no longer	-10
pair no more	19
pair no need	-9
pair no rattles	-7
pair no trip	19
pair nobody stocks	-14
pair not a	22
pair not done	-6
pair not going	14
pair not required	11
pair not the	-8
pair not three	-12
pair not two	-8
pair now no	6
pair now not	-7
pair now she	20
pair now that	-6
pair number he'll	12
pair nursery sash	8
pair nut had	18
pair o i	-16
pair o it's	-15
pair o no	-16
pair o not	11
pair o one	-16
pair o rings	-6
pair o that	19
pair o that's	11
pair o the	19
pair o they	11
pair o we	-5
pair of a	-15
pair of each	11
pair of em	-6
pair of it	-14
pair of the	20
pair of them	-11
pair off again	-8
pair off in	-5
pair off the	39
pair oh four	10
pair ok cartridge	7
pair okay the	-12
pair old one	15
pair on a	-10
pair on i	19
pair on that	24
pair on the	-38
pair on them	-5
pair on too	19
pair on with	-8
pair once the	-7
pair one by	-9
pair one coat	-7
pair one finger	-9
pair one for	-6
pair one from	7
pair one hour	-7
pair one i	9
pair one in	27
pair one is	-12
pair one more	-9
pair one new	-7
pair one of	11
pair one oh	6
pair one on	-10
pair one over	7
pair one roll	-5
pair one ten	-7
pair one the	-5
pair one thirty	9
pair one tube	-8
pair one twenty	9
pair one was	-11
pair one's outta	25
pair only had	-8
pair only the	19
pair only two	-5
pair op 2	8
pair op one	-5
pair op two	-11
pair opened up	-9
pair opening is	16
pair other two	-9
pair our ceiling	-8
pair our side	11
pair out on	7
pair outta the	25
pair over by	9
pair over in	-10
pair over the	8
pair paint it	-9
pair painted shut	11
pair pane is	-6
pair panes are	-7
pair pantry door	-6
pair pattern over	-8
pair peg rail	-8
pair picked one	10
pair picked up	-29
pair piece for	-7
pair piece of	9
pair pipe is	-22
pair place on	-9
pair planks are	11
pair plate one	11
pair ply at	12
pair pocket door	-20
pair pole motor	7
pair poles over	9
pair post is	-17
pair put a	-8
pair put in	7
pair put it	-7
pair put the	-13
pair put up	-6
pair quiet as	10
pair r h	-15
pair rail got	-11
pair rail post	-12
pair ran the	-6
pair rehung shuts	6
pair relief valve	-10
pair required from	11
pair reset it	14
pair restroom drain	13
pair right hand	-8
pair right side	-5
pair roll of	-7
pair rolling good	15
pair roofer is	-10
pair room door	7
pair round the	-7
pair runs good	6
pair sandbox lid	12
pair sashes run	-11
pair says forget	25
pair says its	9
pair says leave	18
pair says never	20
pair says the	5
pair screen door	12
pair screw em	-11
pair screwed a	-15
pair screws in	9
pair sealed roond	21
pair second coat	-15
pair set screw	-6
pair she bought	12
pair she has	-8
pair she wants	-6
pair she'd like	-11
pair she's got	-6
pair shower 2	-12
pair shower arm	8
pair shower head	-9
pair shut the	-11
pair shuts proper	12
pair shuts with	13
pair side door	6
pair sign i	-8
pair six is	10
pair skip it	7
pair sleeve anchors	34
pair solid as	-8
pair solid now	-12
pair spin room	8
pair stain block	8
pair still no	-10
pair still not	-6
pair stocks it	-9
pair stop start	-6
pair stopped at	-9
pair store had	-17
pair strip in	-13
pair stuck back	7
pair stuck down	10
pair supply line	-10
pair swim ladder's	-7
pair swings free	17
pair take that	-6
pair tap around	-5
pair tell the	11
pair texted gus	12
pair thank god	21
pair that bracket	-7
pair that closet	18
pair that comes	-12
pair that door	-14
pair that drain	6
pair that flashing	-6
pair that hole	-6
pair that one	-37
pair that one's	22
pair that rail	-6
pair that wall	-11
pair that whole	6
pair that window	5
pair that's off	7
pair that's the	-5
pair that's why	-8
pair the 2	-7
pair the ac	-9
pair the ballast	-14
pair the basement	22
pair the bay	-7
pair the bedroom's	7
pair the bell	-5
pair the board	-9
pair the bottom	-11
pair the box	-19
pair the bulb	12
pair the cap	-6
pair the carpet	7
pair the cartridge	9
pair the ceiling	-8
pair the check	24
pair the chute	14
pair the cistern	-9
pair the closer	14
pair the closet	24
pair the co	-12
pair the cord	-12
pair the cover	7
pair the day	6
pair the dimmer	13
pair the dining	-8
pair the double	11
pair the drain	-8
pair the dumpster	11
pair the end	11
pair the entry	12
pair the fan	-5
pair the feed	8
pair the fire	15
pair the fist	11
pair the flapper	-7
pair the floor	-23
pair the foam	-5
pair the four	6
pair the front	-5
pair the gate	-5
pair the grate	10
pair the grille	-6
pair the hall	-9
pair the hand	9
pair the hank	6
pair the henhouse	9
pair the hinge	-18
pair the house	-13
pair the inside	-8
pair the joist	-6
pair the kit	14
pair the ladder	22
pair the lamp	9
pair the landlord	-9
pair the last	-7
pair the latch	-23
pair the laundry	10
pair the left	-20
pair the light	-6
pair the mail	7
pair the mens	-8
pair the mirror	-6
pair the mouse	-9
pair the newel	11
pair the next	18
pair the nook	-5
pair the one	-7
pair the opener	-6
pair the other	-25
pair the outlet	-8
pair the painter	15
pair the panel	-7
pair the pantry	6
pair the parlor	17
pair the patch	-14
pair the pharmacy	-9
pair the plate	23
pair the porch	-8
pair the post	-8
pair the putty	-9
pair the rail	15
pair the range	7
pair the reel	-8
pair the rod	7
pair the roll	-13
pair the roof	-8
pair the same	5
pair the sash	16
pair the screws	-5
pair the seats	-7
pair the shelves	-12
pair the shop	10
pair the side	32
pair the siding	9
pair the six	-9
pair the slider	6
pair the slides	12
pair the soft	-6
pair the spring	28
pair the stair	-7
pair the step	14
pair the stop	-8
pair the stove	36
pair the street	10
pair the studs	-6
pair the supply	-12
pair the sweep	11
pair the switch	-11
pair the table	14
pair the tack	6
pair the tank	-6
pair the tap	17
pair the three	9
pair the tile	-14
pair the tin	9
pair the toilet	11
pair the top	18
pair the track	-10
pair the track's	-6
pair the truck	-14
pair the tub	-6
pair the twenty	8
pair the two	31
pair the upper	-6
pair the usb	9
pair the valve	-14
pair the van	-24
pair the wall	-14
pair the water	6
pair the watter	23
pair the way	14
pair the white	12
pair the whole	-16
pair the window	11
pair the yard	-9
pair them closet	15
pair them panes	-7
pair there with	8
pair there's a	-18
pair they don't	11
pair they had	-24
pair they only	-7
pair they was	-5
pair they were	-8
pair thing is	12
pair thirty one	16
pair this time	-15
pair three by	11
pair three is	-20
pair through it	-16
pair through the	-11
pair tight now	6
pair tile discontinued	-9
pair tile pattern	-8
pair tiles are	-10
pair tiles by	-6
pair tiles it's	-5
pair time thank	-11
pair to a	-14
pair to buy	-13
pair to do	-6
pair to friday	-8
pair to go	-7
pair to monday	-7
pair to order	-5
pair to that	12
pair to the	26
pair toe kick	-6
pair toilet seat	6
pair tomorrow when	-6
pair too far	9
pair took em	-5
pair took the	11
pair track online	-10
pair track's bent	-6
pair trim off	-10
pair tub of	10
pair tuesday now	-6
pair turned the	13
pair twelve foot	-6
pair twenty four	-8
pair twenty one	10
pair twenty two	-13
pair two by	-7
pair two clamps	-12
pair two coats	10
pair two foot	-5
pair two i	12
pair two inches	6
pair two is	24
pair two it's	-5
pair two more	-6
pair two new	14
pair two of	-19
pair two screws	21
pair two the	-12
pair under nettie's	10
pair under the	-11
pair up a	-7
pair up by	9
pair up in	19
pair up like	-5
pair up monday	-6
pair up on	-10
pair up over	9
pair up the	-10
pair up there	5
pair up top	7
pair usb number	12
pair use the	-9
pair ut it	-9
pair ut it's	-9
pair ut no	-10
pair vacuum breaker	-10
pair valve is	-9
pair w the	-6
pair wad in	13
pair waits on	-12
pair wall in	7
pair wall is	-8
pair wall where	11
pair want the	13
pair wants a	-15
pair wants it	-5
pair wants the	-11
pair was a	19
pair was got	11
pair was just	26
pair was nothing	9
pair was only	15
pair was out	-5
pair was the	9
pair washer box	-7
pair washer is	10
pair water at	9
pair water board	9
pair way in	-5
pair weeping at	-6
pair went in	6
pair went to	-9
pair were out	-7
pair when it's	-6
pair when they	-6
pair where the	7
pair whistle in	13
pair whole new	-7
pair whole thing	-5
pair window 3	-5
pair window corded	-15
pair window in	5
pair window lock	15
pair wire nut	21
pair with a	23
pair with both	-6
pair with his	13
pair with me	14
pair with one	-9
pair with that	18
pair with the	19
pair won't hold	-6
pair would like	-11
pair yard called	-6
pair you can't	25
pair you cant	-9
pair you'd never	14
put false true	-91
put true false	61
put true true	-12
rarest 1	44
rarest 1 read done head no	13
rarest 1 read done head own	9
rarest 1 read done+fixed head own	37
rarest 1 read done+flaw head no	28
rarest 1 read done+flaw head own	11
rarest 1 read done+goods head no	-8
rarest 1 read fixed head no	28
rarest 1 read fixed head own	7
rarest 1 read flaw head before	13
rarest 1 read flaw head no	-6
rarest 1 read flaw+goods head own	6
rarest 1 read goods head no	-34
rarest 1 read goods head own	-12
rarest 1 read none head no	10
rarest 1 read none head own	21
rarest 1 read plan head before	-10
rarest 1 read plan head no	-24
rarest 1 read plan head own	-47
rarest 2 read done head no	-9
rarest 2 read done head own	-25
rarest 2 read done+fixed head no	-14
rarest 2 read done+flaw head no	-31
rarest 2 read done+flaw head own	-19
rarest 2 read done+plan head no	-9
rarest 2 read fixed head no	13
rarest 2 read fixed head own	8
rarest 2 read flaw head no	27
rarest 2 read flaw head own	18
rarest 2 read flaw+plan head no	-7
rarest 2 read goods head no	-14
rarest 2 read goods head own	6
rarest 2 read goods+plan head no	-5
rarest 2 read none head before	15
rarest 2 read none head no	8
rarest 2 read none head own	-20
rarest 2 read plan head before	-11
rarest 2 read plan head no	24
rarest 2 read plan head own	36
rarest 3	-17
rarest 3 read done head own	20
rarest 3 read done+plan head own	9
rarest 3 read fixed head no	9
rarest 3 read flaw head no	-14
rarest 3 read flaw head own	-26
rarest 3 read plan head no	-12
rarest 3 read plan head own	8
rarest 4	-49
rarest 4 read done head before	11
rarest 4 read done head named	21
rarest 4 read done head no	-7
rarest 4 read done+fixed head before	15
rarest 4 read done+fixed head no	-11
rarest 4 read done+flaw head named	-19
rarest 4 read done+flaw head no	-7
rarest 4 read done+plan head no	9
rarest 4 read fixed head before	20
rarest 4 read fixed head no	-9
rarest 4 read flaw head own	-22
rarest 4 read flaw+goods head before	-6
rarest 4 read goods head before	-27
rarest 4 read none head own	-14
rarest 4 read plan head before	-27
read done flaw	21
read done work	22
read done+fixed flaw	21
read done+fixed+plan flaw	12
read done+flaw work	-20
read done+plan flaw	-19
read done+plan work	13
read fixed flaw	80
read fixed work	-23
read fixed+plan flaw	12
read flaw flaw	6
read flaw work	-18
read flaw+goods flaw	-9
read flaw+plan flaw	-21
read goods flaw	-60
read goods work	-22
read goods+plan flaw	-10
read none flaw	-8
read none work	26
read plan flaw	-60
size long	-35
size short	12
waiting	-39
well false false	-24
well false true	-87
well true false	74
well true true	6
word 1	-59
word 10	-26
word 12	-7
word 14	-8
word 15	-15
word 2	-33
word 20	-5
word 2x4	-7
word 30	-13
word 36	-11
word 5	-29
word 6	-25
word 8	9
word 9	11
word a	36
word about	20
word abt	-7
word ac	-10
word add	-9
word after	28
word again	-53
word against	7
word ain't	-7
word aint	-6
word air	-9
word all	6
word alone	10
word along	23
word already	13
word also	-16
word am	6
word an	-15
word another	-8
word answer	12
word any	-6
word anyhow	12
word anyway	-6
word anywhere	27
word apart	-8
word apt	-14
word are	11
word around	-26
word arrive	30
word as	35
word asked	-14
word at	-33
word ause	-14
word baby	-6
word back	17
word backed	-16
word bad	-18
word bag	-9
word bags	-10
word ballast	-8
word bangs	14
word bar	-11
word base	-18
word bathroom	-11
word battery	-11
word be	-19
word bead	-9
word been	-17
word behind	29
word bell	-12
word below	-12
word bench	-9
word bent	7
word bifold	-5
word big	6
word bit	8
word blade	13
word block	-10
word blocking	12
word bloke	10
word blow	-6
word blue	-6
word boards	-8
word bolt	17
word bolts	-12
word bone	11
word boot	12
word both	49
word bought	14
word bowl	6
word bracket	-24
word brackets	-13
word brass	-30
word breaker	-28
word bringing	-5
word brings	-5
word broke	-9
word bucket	-10
word butter	11
word buy	-26
word by	-18
word cabinet	-6
word cable	15
word called	-45
word cam	12
word came	31
word can	-12
word can't	30
word carpet	-7
word cartridge	-11
word cat	-13
word caulked	-7
word ceiling	-16
word cement	-10
word chain	8
word chair	-10
word change	7
word changed	9
word changing	10
word check	-7
word chirping	-6
word christmas	9
word chrome	-6
word chute	9
word clamp	12
word clamps	8
word clean	-10
word cleaned	29
word cleared	7
word clears	26
word close	12
word closer	-12
word closet	7
word closing	9
word co	-16
word coat	-26
word coffee	6
word cold	-5
word color	-5
word come	33
word comes	-18
word complete	21
word cooked	12
word cord	-11
word corner	-8
word could	8
word counted	-9
word counter	-6
word cover	15
word crack	-6
word cracked	-15
word cross	22
word crown	-6
word d	-10
word da	6
word dae	-6
word damp	-18
word dead	-19
word deck	-12
word depot	-6
word did	40
word didn't	7
word didnt	-6
word discontinued	-9
word dishwasher	-5
word do	-25
word doctor	-8
word does	-5
word doesn't	24
word doesnt	16
word dog	14
word don't	15
word dont	-15
word door's	-9
word doors	-6
word double	-13
word dover	-8
word down	36
word downstairs	10
word drags	-6
word drain	-20
word drap	23
word drawer	-25
word dried	-18
word drip	-21
word drips	-6
word driver	-9
word drop	12
word dropped	23
word dry	59
word dryer	6
word drywall	-8
word dumpster	11
word each	8
word ecause	-8
word edge	-23
word eight	-9
word eighteen	-16
word eighths	11
word eighty	-6
word either	-13
word eleven	12
word end	-12
word ends	-6
word entry	-5
word even	-7
word every	-21
word exam	-8
word extension	10
word extra	-10
word eye	11
word fan	-13
word far	9
word faucet	-8
word feed	-6
word feet	-11
word fifteen	6
word fifty	-8
word filled	26
word filter	9
word finally	5
word find	7
word fine	-16
word finger	-9
word finish	9
word finished	-27
word fire	25
word first	14
word five	-23
word fix	11
word fixed	9
word flange	6
word flapper	-7
word flashing	-5
word flat	19
word flight's	12
word float	-7
word floor	-13
word foam	-7
word foot	-30
word footer	-8
word for	-64
word forget	40
word four	-32
word free	26
word friday	-30
word from	-13
word front	-29
word ft	-8
word full	10
word gal	-11
word gave	-8
word get	-7
word gets	-7
word getting	-6
word gfci	17
word glass	-17
word glue	8
word glued	16
word go	-30
word god	21
word goes	17
word going	48
word gone	12
word gonna	9
word good	58
word got	-19
word gotta	-14
word grab	-7
word grate	-10
word grease	27
word grille	-6
word grout	-6
word gus	8
word gutter	-9
word guy	-11
word guys	13
word had	14
word half	11
word hand	-14
word handle	-37
word handrail	-10
word hanging	24
word hangs	-7
word happy	9
word hard	11
word hardware	-11
word has	-11
word hauling	10
word have	-14
word he'll	9
word he's	24
word head	12
word hear	34
word heat	-17
word heater	8
word heavy	-5
word held	16
word hen	-26
word henhouse	9
word her	36
word here	-23
word him	-7
word himself	-12
word hinge	-37
word hinges	-31
word history	10
word hit	-13
word hold	-7
word holes	-9
word home	-15
word hook	-9
word hooked	14
word hose	24
word hour	-8
word house	-13
word how	8
word hundred	-9
word hung	-18
word i	-21
word i'll	-10
word i'm	-13
word i've	-12
word if	-7
word ill	-11
word im	-6
word in	6
word inch	-40
word instead	-6
word insulated	-6
word insulation	6
word into	-20
word iron	-9
word is	-20
word isn't	13
word isnt	-9
word it	46
word it's	-13
word itself	9
word joist	-8
word jumped	-7
word just	-26
word keep	-7
word keeps	-7
word kicked	14
word kind	-19
word kit	-27
word kitchen	-17
word know	13
word label	11
word ladder	25
word lady	9
word lags	-7
word landing	8
word landlord	11
word landlord's	22
word last	-20
word latch	-13
word laying	-6
word leave	10
word left	-10
word leg	10
word length	-6
word level	11
word lid	8
word light	-31
word like	56
word line	-14
word list	-6
word listen	13
word lit	22
word little	-19
word locks	14
word long	-7
word longer	-14
word looked	-12
word looking	-9
word loose	35
word low	-8
word lumber	-16
word mail	-6
word maple	-8
word marine	-7
word maybe	8
word meant	6
word meanwhile	11
word measured	-6
word mens	-8
word mill	-8
word min	15
word mind	10
word mine	-6
word minutes	7
word missing	-6
word mm	-6
word monday	-14
word more	6
word motor	-15
word mouse	7
word moves	-9
word moving	-8
word mrs	-8
word much	-6
word must	-13
word my	31
word myself	26
word nd	-7
word need	-34
word neither	-7
word nettie's	21
word never	26
word new	6
word newel	11
word next	6
word nice	18
word nine	-11
word nineteen	-14
word ninety	-7
word nipped	-14
word no	63
word nobody	-14
word nothin	16
word nothing	42
word now	85
word number	6
word nursery	11
word nut	14
word o	-33
word oak	-7
word of	-28
word off	42
word office	-7
word oh	19
word oiled	-17
word ok	8
word okay	17
word old	-32
word on	30
word ones	-9
word only	-36
word open	19
word opener	-6
word opens	5
word or	-15
word order	-11
word ordered	-26
word other	-17
word ought	11
word our	-15
word ours	-6
word outlet	-23
word outside	-9
word outta	25
word over	8
word overnight	-13
word owner	11
word pail	-9
word paint	-17
word painted	6
word painter	13
word painting	-6
word pan	-9
word panel	6
word panes	-15
word paper	-6
word part	-7
word past	21
word pattern	-7
word pau	11
word peg	-7
word people	-6
word pergola	-7
word photocell	-9
word pick	-7
word picked	-18
word piece	20
word pieces	13
word pine	-11
word pipe	-6
word place	-19
word planed	-15
word plate	7
word plugged	-15
word plum	13
word plus	24
word pocket	-6
word point	-13
word post	-18
word poured	-8
word pressure	11
word pretty	9
word primed	7
word pull	-15
word pump	-5
word push	-8
word put	9
word putting	7
word putty	-8
word quarter	-7
word quiet	5
word quit	27
word r	-17
word rack	-5
word radiator	-6
word rail	-34
word rain	-6
word rained	-7
word ran	37
word range	-8
word rattles	-7
word ready	10
word red	10
word regulator	15
word rehung	13
word relief	-10
word replace	-6
word required	10
word reset	22
word rest	23
word right	26
word ring	-5
word ripped	-6
word rocking	8
word rod	-23
word roll	-10
word rolled	5
word rollers	-12
word rolling	15
word roof	-8
word roofer	-10
word room	-5
word room's	-18
word roond	21
word round	-9
word rulers	-6
word run	-10
word running	9
word runs	23
word rusted	-8
word s	-15
word said	-8
word sand	10
word sanded	22
word sanding	10
word sash	6
word sat	8
word saw	-7
word says	37
word scratch	8
word screen	-21
word screw	13
word screwed	9
word screws	15
word seal	-10
word sealed	9
word seam	-5
word seat	-10
word second	-11
word see	19
word seized	-10
word set	-9
word setting	7
word seven	5
word sharp	6
word she	-14
word she'd	-11
word she's	44
word sheet	-7
word sheets	12
word shelf	-28
word shellac	5
word shop	-14
word short	15
word should	8
word showed	-14
word shower	-22
word shut	-13
word shuts	24
word side	22
word sides	12
word sign	-9
word sign's	-11
word sink	-8
word sister	-9
word sits	12
word sitting	-16
word six	17
word size	-9
word skip	23
word slats	-11
word smoke	-8
word smooth	6
word soaked	-7
word soldered	-9
word some	-10
word somebody	8
word spare	-14
word special	-7
word split	-24
word spot	5
word spring	11
word springs	-8
word square	-8
word stain	-15
word stairs	-5
word stall	-10
word start	-6
word steady	20
word steps	8
word still	-27
word stock	-9
word stocks	-14
word stools	-6
word stop	-13
word store	-30
word stove	14
word straight	28
word street	-5
word strike	-10
word stringer	-6
word strip	-21
word stripped	-16
word stuck	35
word studs	-6
word stuff	21
word suite	15
word summer	-8
word supply	-27
word swapped	15
word sweating	-6
word sweep	-17
word swings	21
word switch	-25
word t	-7
word table	-7
word takes	-18
word tannie	18
word tap	-14
word tape	9
word taped	29
word tell	10
word ten	-22
word tested	26
word texted	11
word than	9
word thank	16
word that	-5
word that's	-7
word thats	-16
word the	-38
word them	9
word there's	-25
word theres	-8
word they	-46
word they'd	-10
word they're	13
word theyre	7
word thing	33
word third	9
word thirty	23
word this	-14
word those	24
word thought	25
word thread	7
word three	-39
word through	-24
word thru	20
word thursday	-16
word tight	43
word tightened	15
word tile	-6
word tiles	-6
word till	-16
word time	-19
word timer	-7
word times	-7
word tin	5
word to	-22
word today	-6
word toggles	9
word toilet	-13
word told	-11
word tomorrow	-20
word too	6
word took	18
word top	7
word towel	-11
word town	-12
word track	-9
word treated	-6
word trim	-12
word tripped	28
word truck	6
word tube	28
word tuesday	-18
word turn	20
word turned	31
word turns	25
word twelve	-15
word twenty	-8
word twice	-13
word two's	10
word uh	13
word um	-7
word under	-20
word unit	-16
word until	-9
word up	31
word upper	-9
word upstairs	41
word us	25
word usb	-7
word use	-11
word used	7
word ut	-51
word vacuum	-8
word valve	-22
word valves	-18
word varnish	-7
word vent	-14
word volts	10
word w	-13
word waits	-13
word wall	-26
word walls	-17
word want	-5
word wants	-24
word warm	-9
word was	-7
word washer	-9
word water	13
word watter	23
word wax	-7
word way	38
word we	-46
word we'll	-5
word we're	6
word wednesday	-22
word week	-6
word weeping	-8
word well	41
word went	-5
word were	-11
word wet	-15
word what	-10
word what's	-8
word when	-24
word where	9
word while	-15
word white	-8
word whole	-12
word why	-9
word window	-13
word wire	25
word with	33
word wobble	-7
word won't	5
word wont	-6
word wood	-18
word worn	-12
word would	6
word wrap	-7
word wrong	-7
word x	-24
word ya	18
word yard	-11
word yeah	7
word year	11
word yes	-17
word yesterday	17
word yet	-20
word you'd	14
work	13
`;
