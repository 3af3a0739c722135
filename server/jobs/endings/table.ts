/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-15
after - -	-15
after are	24
after at	20
after at the	24
after back	12
after back up	7
after bought	-24
after bought -	-30
after called	-11
after cap	-15
after clears	13
after come	32
after cut	19
after doesn't	17
after doesn't bang	7
after gets	-5
after goes	6
after got	5
after had a	9
after handle	-10
after has	14
after has a	14
after here	-13
after i found	-7
after i put	10
after in	12
after in the	5
after is	18
after is a	-12
after is insulated	-6
after is the	-8
after it's	-15
after its	-12
after just	-14
after kit	-8
after need	-6
after next	-8
after not	-6
after off	38
after only	-8
after out	10
after out of	10
after pattern	-8
after pattern over	-8
after reads	-10
after she	25
after stop	-9
after strip	-17
after strip -	-17
after the	-34
after tight	23
after tight -	15
after to	-9
after up	13
after wall	-9
after was	9
ahead -	27
ahead a	22
ahead back	-18
ahead bedroom	6
ahead cleanout	-7
ahead closet	30
ahead deck	-18
ahead end	-7
ahead fire	-8
ahead floor	-7
ahead front	-14
ahead got	11
ahead inch	-5
ahead mail	9
ahead nd	-19
ahead new	36
ahead nine	-8
ahead of	-13
ahead one	-16
ahead pantry	16
ahead pocket	-14
ahead porch	-15
ahead room	14
ahead screen	8
ahead side	-16
ahead that	-19
ahead the	31
ahead them	19
ahead those	8
ahead toilet	-10
ahead window	17
any	-13
asked false	-11
before 0	-33
before 1	15
before 2	20
days few	8
days many	-49
days none	22
due false	-32
due true	32
end 1	-15
end 2	6
end 20	-20
end 2x4	-7
end 8	20
end adhesive	-11
end again	-12
end all	36
end already	14
end am	7
end anyhow	13
end anywhere	9
end arm	-11
end arrive	29
end back	26
end backup	5
end bag	-7
end bang	23
end bangs	16
end bar	-8
end battery	-9
end black	-8
end blades	-14
end board	17
end boards	-16
end bolt	-15
end both	10
end bought	23
end box	21
end br	17
end brackets	-20
end breaker	-25
end butter	24
end buy	-11
end called	-8
end came	13
end can	16
end cap	-6
end carpet	9
end cartridge	7
end cement	-19
end changed	19
end cleaned	16
end close	14
end closer	-7
end closet	13
end coat	15
end coats	16
end come	32
end cord	-11
end corded	-17
end corner	-7
end counter	-16
end cracked	-11
end day	9
end dead	-7
end deep	9
end dimmer	11
end discontinued	-9
end do	-5
end door	5
end dover	-8
end down	-14
end drap	23
end drawer	-9
end dripping	15
end drips	-8
end dry	44
end either	-10
end elbow	-7
end fan	-6
end far	12
end feet	-7
end fifteen	9
end filled	-12
end finally	-14
end finger	-8
end finished	-14
end first	14
end five	-14
end flat	8
end floor	-5
end foot	-20
end footer	-7
end four	-8
end free	19
end friday	-14
end ft	-17
end gal	-6
end go	-14
end god	20
end gone	-6
end good	19
end grate	12
end hall	6
end hand	-23
end head	-8
end here	11
end him	14
end hinges	-9
end history	11
end hold	-5
end hole	-9
end holes	-12
end home	-10
end hook	-5
end hot	45
end hour	-5
end hundred	-8
end in	23
end inch	-23
end inches	-7
end insulated	-6
end is	9
end it	18
end itself	7
end kind	-13
end ladder	25
end latch	-19
end length	-6
end level	10
end light	-13
end lights	-7
end lock	-18
end loose	25
end lunch	16
end me	-7
end monday	-19
end morning	-8
end motor	-5
end mouse	12
end moving	-6
end mud	12
end new	23
end next	-11
end nice	10
end night	-6
end no	-12
end noon	-7
end now	30
end off	-7
end old	-6
end on	18
end once	6
end one	-18
end ones	-13
end online	-8
end only	-11
end op	-5
end open	16
end ordered	-12
end out	-29
end outlet	-7
end outside	-7
end over	-7
end overnight	-16
end pair	-5
end piece	-6
end pieces	16
end pipe	-11
end place	-5
end please	6
end pretty	7
end quit	13
end rattles	-7
end ready	12
end ring	-7
end rm	14
end rock	8
end room	8
end roond	22
end run	-11
end sanded	31
end saturday	-5
end say	6
end screw	17
end sealed	10
end set	-13
end shelf	13
end shelves	11
end shop	-5
end side	15
end siding	9
end six	6
end slider	-6
end snapped	-15
end soldered	-8
end solid	-6
end spare	-10
end squirrel	13
end steady	12
end stock	-7
end stop	-9
end store	-8
end straight	25
end strip	-7
end stripped	-18
end stuff	-7
end summer	-8
end swapped	21
end switch	-11
end table	6
end tank	-6
end tap	15
end taped	23
end tested	26
end them	-6
end there	5
end thing	30
end those	-12
end thread	6
end three	-14
end tight	36
end tile	-7
end tiles	14
end time	-6
end times	-5
end tin	8
end today	-7
end tomorrow	-10
end too	-7
end top	18
end town	-11
end trip	19
end truck	-11
end tube	32
end tuesday	-15
end twelve	-8
end twice	-5
end two	-23
end us	17
end valve	6
end valves	-8
end van	-8
end wall	-34
end water	-8
end watter	23
end way	23
end wednesday	-15
end white	-12
end wood	-15
end wrong	-6
end yes	-9
end yet	-10
first 1	-12
first 2	-26
first 4	-6
first 5	-15
first 8	9
first ac	7
first also	-16
first ause	-14
first base	13
first bath	23
first bedroom	-6
first behind	16
first bench	33
first blind	8
first board	9
first boards	10
first boot	7
first bottom	13
first bought	-11
first bowl	7
first box	12
first breaker	-13
first cabinet	6
first called	10
first carpet	-10
first ceiling	6
first chapel	-5
first clamps	16
first cleaned	27
first closer	-16
first closer's	-11
first corner	-19
first cut	11
first did	16
first doctor	-8
first dryer	11
first ecause	-7
first edge	-7
first exit	-5
first fan	13
first filled	27
first filter	30
first first	-12
first fished	13
first five	-7
first flag	11
first floor	-6
first for	-7
first found	11
first from	-8
first front	8
first garage	-6
first gate	18
first gets	11
first gfci	15
first glass	-8
first goes	-15
first got	-38
first gutter	-6
first had	-6
first handrail	28
first he's	15
first hen	-26
first here	-8
first hinge	-8
first hinges	32
first hood	-20
first i	-65
first i've	-10
first in	6
first is	15
first its	-31
first just	-6
first kitchen	-14
first landlord	-7
first landlord's	21
first last	-19
first latch	25
first left	21
first light	10
first lock	13
first make	-8
first me	-9
first mine	-7
first mirror	-17
first moved	-11
first mrs	-5
first nd	-10
first need	-5
first needs	-5
first new	-7
first nine	-8
first no	-38
first nothing	26
first now	-5
first nursery	6
first o	-27
first okay	9
first old	-14
first once	-7
first one	-33
first op	12
first ordered	-6
first ours	-18
first outlet	11
first oven	-13
first pantry	6
first picked	-21
first pipe	-17
first pocket	-19
first pole	28
first poles	12
first post	-16
first pulled	11
first put	-12
first r	-17
first rail	-15
first rained	-10
first ran	34
first replace	-6
first restroom	13
first right	12
first rollers	-7
first sandbox	14
first saturday	14
first screens	15
first she	-33
first she's	21
first shelf	-10
first sign's	9
first sink	15
first six	20
first slider	7
first smoke	24
first stall	-8
first still	-11
first stopped	-16
first store	12
first tap	10
first tape	-8
first texted	14
first that	18
first that's	-17
first the	-6
first them	10
first there's	-16
first they	-12
first they're	-11
first those	8
first three	-8
first threshold	17
first tiles	-17
first toilet	-6
first told	-10
first took	-7
first tread	20
first turned	13
first two	-15
first u11	-6
first ut	-52
first wall	9
first wants	-9
first washer	-8
first we	-14
first you	5
first your	17
flaw	-27
flaw gone	18
flaw said false	19
flaw said true	28
head before	-13
head before read done	17
head before read done+fixed	16
head before read fixed	21
head before read flaw	18
head before read flaw+goods	-9
head before read goods	-22
head before read none	13
head before read plan	-49
head named	32
head named read done	13
head no	-31
head no read done	6
head no read done+fixed	-25
head no read done+flaw	-15
head no read done+goods	-7
head no read done+plan	-6
head no read fixed	37
head no read fixed+plan	13
head no read flaw+goods	-8
head no read flaw+goods+plan	11
head no read flaw+plan	-13
head no read goods	-51
head no read goods+plan	-5
head no read none	15
head no read plan	-10
head own read done	9
head own read done+fixed	27
head own read done+plan	7
head own read flaw	-27
head own read flaw+goods	6
head own read flaw+plan	-10
head own read goods	-8
head own read goods+plan	-7
head own read none	-16
met false	32
met true	-80
named 0 head before	-14
named 0 head no	-107
named 0 head own	-16
named 1 head named	15
named 1 head no	27
named 1 head own	31
named 2 head named	17
named 2 head no	69
named 2 head own	-13
open	8
own 0	-16
own 0 read done	17
own 0 read done+fixed	11
own 0 read done+flaw	-25
own 0 read done+plan	15
own 0 read fixed	23
own 0 read flaw+goods	-7
own 0 read goods	-26
own 0 read none	-13
own 0 read plan	-26
own 1	-51
own 1 read done	12
own 1 read done+flaw+goods	11
own 1 read done+goods	-13
own 1 read done+plan	-5
own 1 read fixed	7
own 1 read fixed+plan	13
own 1 read flaw	-9
own 1 read flaw+goods	-9
own 1 read flaw+goods+plan	11
own 1 read flaw+plan	-15
own 1 read goods	-27
own 1 read goods+plan	-8
own 1 read plan	-33
own 2	31
own 2 read done+goods	6
own 2 read done+plan	-11
own 2 read fixed	29
own 2 read flaw	16
own 2 read flaw+plan	-6
own 2 read goods	-22
own 2 read none	8
own 3	39
own 3 read done	11
own 3 read done+flaw	16
own 3 read flaw	-13
own 3 read goods	-5
own 3 read none	18
pair 1 in	-9
pair 12 ft	-14
pair 2 ft	-6
pair 3 4	-5
pair 3 8	9
pair 6 ft	-6
pair a bead	-7
pair a board	10
pair a crack	-8
pair a door	-8
pair a drap	23
pair a fire	11
pair a gal	-6
pair a ground	6
pair a hole	14
pair a latch	-10
pair a leg	10
pair a mouse	10
pair a new	-20
pair a piece	8
pair a plate	9
pair a rock	8
pair a screw	-13
pair a shelf	-7
pair a spare	-9
pair a special	-6
pair a squirrel	13
pair a truck	19
pair a wad	13
pair about 2	-6
pair about a	-7
pair about his	15
pair about the	26
pair ac guy	-7
pair after all	25
pair after the	-6
pair again the	-7
pair against the	8
pair all 2x4	-7
pair all day	-11
pair all four	9
pair all of	-13
pair all the	-8
pair all three	25
pair all up	-6
pair almost da	6
pair along the	-8
pair also got	-6
pair an inch	-7
pair anchor cement	-12
pair answer monday	14
pair are all	-8
pair are both	-7
pair are on	38
pair are rolling	17
pair are stripped	-6
pair are stuck	7
pair around the	-10
pair as a	10
pair as new	6
pair as the	-8
pair at all	8
pair at home	-10
pair at it	-10
pair at the	-11
pair back in	15
pair back of	8
pair back on	-44
pair back room	-10
pair back to	-6
pair back up	12
pair ballast in	-15
pair base is	11
pair bay two	11
pair bedroom one	6
pair before the	13
pair behind furnace	14
pair behind it	-8
pair behind the	13
pair bench is	18
pair big door	9
pair board about	7
pair board on	-7
pair board two	15
pair board would	-8
pair boards are	19
pair boards down	-8
pair bone dry	10
pair both in	-8
pair both sashes	-11
pair both sides	11
pair both valves	-14
pair bought the	-11
pair bowl one	-7
pair box in	-10
pair box is	-10
pair box of	-8
pair bracket in	-17
pair bracket is	12
pair break room	-6
pair by eight	9
pair by itself	11
pair by six	-8
pair by the	-12
pair cabinet shop	-8
pair called tank	-5
pair called the	-9
pair came in	-16
pair can't be	-9
pair can't see	25
pair cap nobody	-5
pair caps on	-28
pair carpet tile	-9
pair cart is	11
pair cartridge all	-6
pair ceiling tile	-12
pair chain on	-12
pair chapel doors	-5
pair check for	11
pair check valve	29
pair chute door	16
pair cistern is	7
pair cleanout door	-7
pair closer arm	-24
pair closer is	-5
pair closer's here	-11
pair closes it	16
pair closet door	7
pair closet doors	17
pair closet rod	10
pair co op	-9
pair coat of	-13
pair coat on	-12
pair coats of	5
pair come loose	-6
pair come off	17
pair come up	-6
pair comes in	-9
pair corner is	-6
pair could the	-7
pair cut out	-10
pair da screen	6
pair da whole	5
pair damp about	-6
pair deck boards	-19
pair did it	8
pair did the	25
pair dining room	6
pair doesn't bang	23
pair doesnt want	16
pair don't get	13
pair don't have	-6
pair door 3	5
pair door clears	13
pair door closer	-19
pair door closes	16
pair door doesn't	23
pair door found	-8
pair door i	-13
pair door in	-9
pair door stop	-7
pair door the	7
pair door trim	-10
pair door's back	-28
pair doors are	15
pair double check	11
pair double hook	-5
pair down the	-5
pair down to	31
pair drags on	-8
pair drain had	13
pair dry as	12
pair dry at	6
pair each meanwhile	12
pair eight foot	-6
pair eight inch	-5
pair end cap	13
pair exam one	10
pair exam two	-9
pair exit sign	-8
pair far bowl	8
pair faucet is	-6
pair fill valve	-13
pair find that	17
pair finish is	16
pair fire door	-11
pair first coat	-20
pair first thing	22
pair fist was	12
pair five minutes	6
pair flag light	11
pair flat two	14
pair floor drain	-7
pair floor i	-9
pair floor reads	-13
pair for flat	11
pair for now	-23
pair for say	6
pair for that	-12
pair for the	8
pair forget the	23
pair forgot for	6
pair found a	23
pair found at	7
pair found our	-8
pair found range	5
pair found the	-16
pair fourteen by	-9
pair from a	12
pair from my	13
pair from our	11
pair from the	-38
pair front door	-11
pair ft along	-6
pair ft of	23
pair full of	8
pair furnace is	14
pair garage door	-7
pair gave me	7
pair get a	7
pair get the	11
pair gets a	-13
pair gets replaced	-10
pair getting a	-10
pair gfci in	23
pair goes all	-15
pair goes in	-9
pair goes over	-7
pair goes up	37
pair going anywhere	31
pair going in	15
pair going to	15
pair good too	17
pair good while	-9
pair got 1	-7
pair got a	-17
pair got both	-10
pair got in	-6
pair got it	5
pair got its	32
pair got the	-27
pair got their	7
pair got two	10
pair grille is	-5
pair gus the	14
pair gutter is	-10
pair guy came	-7
pair h window	-17
pair had a	10
pair had no	-13
pair had one	37
pair had the	-7
pair had to	-8
pair had two	5
pair had was	-13
pair half inch	-6
pair half the	6
pair hand one	13
pair hand this	-11
pair has gone	9
pair has one	-7
pair has two	-5
pair have it	-6
pair have one	-5
pair have the	9
pair he had	6
pair he says	38
pair he wants	8
pair he'll answer	14
pair hen i	-5
pair henhouse now	12
pair here right	-11
pair hinges came	40
pair hole i	5
pair holes are	-8
pair holes in	6
pair hot water	9
pair hung on	-8
pair hung the	-11
pair i bent	23
pair i can	-10
pair i can't	-10
pair i cut	-21
pair i did	39
pair i found	-9
pair i gave	-8
pair i got	-7
pair i had	50
pair i have	-5
pair i hung	-15
pair i keep	-7
pair i left	-6
pair i looked	-8
pair i need	-5
pair i opened	14
pair i picked	10
pair i pulled	-9
pair i put	6
pair i ran	-13
pair i screwed	-11
pair i stuck	24
pair i think	-8
pair i told	-10
pair i tried	6
pair i wanted	11
pair i was	9
pair in a	-14
pair in already	-7
pair in at	-7
pair in back	-17
pair in bedroom	10
pair in behind	9
pair in dover	-8
pair in her	6
pair in his	10
pair in i	15
pair in it	37
pair in my	9
pair in now	-7
pair in on	-6
pair in stock	-6
pair in that	11
pair in the	11
pair in three	-6
pair in too	19
pair in town	-12
pair in white	-8
pair inside of	-8
pair into the	-6
pair is a	-18
pair is back	7
pair is bent	-16
pair is close	27
pair is cracked	-6
pair is cut	9
pair is damp	-6
pair is done	-12
pair is finish	16
pair is finished	-7
pair is gone	-12
pair is good	-26
pair is hanging	5
pair is history	11
pair is in	45
pair is insulated	-6
pair is not	-5
pair is off	-8
pair is old	-7
pair is open	-9
pair is soft	-7
pair is solid	8
pair is straight	17
pair is stripped	-9
pair is the	-9
pair is tuesday	-7
pair is up	38
pair it again	-5
pair it ain't	-7
pair it back	6
pair it bangs	16
pair it came	-15
pair it closes	-14
pair it down	-6
pair it for	-5
pair it four	-7
pair it gets	-18
pair it is	-6
pair it it's	-12
pair it like	9
pair it needs	13
pair it no	-8
pair it now	-8
pair it off	24
pair it on	27
pair it over	6
pair it till	-6
pair it twice	-12
pair it wants	-9
pair it was	5
pair it with	18
pair it's a	-11
pair it's just	-11
pair it's like	-14
pair it's not	11
pair it's on	40
pair it's solid	-13
pair it's the	-32
pair it's up	11
pair its a	-12
pair its mud	12
pair its on	-16
pair its sitting	-12
pair its the	-16
pair its too	10
pair ladder bolt	-8
pair last night	16
pair last two	-10
pair lateral 2	18
pair leave it	-11
pair leave the	21
pair left hand	-7
pair left one	-6
pair left side	7
pair leg under	10
pair lid shuts	14
pair light over	-7
pair like butter	19
pair like it	11
pair like new	23
pair like the	-17
pair likes it	-6
pair looked at	-7
pair mail cart	9
pair make it	-9
pair make that	-8
pair meanwhile the	12
pair mens i	-8
pair mine are	-7
pair monday when	-8
pair more holes	6
pair more whistle	10
pair moved it	-11
pair moved the	10
pair moves to	-7
pair mrs d	-11
pair must have	-6
pair my coat	20
pair nd both	-10
pair nd for	-7
pair nd gets	-9
pair nd he	-13
pair nd i	-15
pair nd it	31
pair nd it's	-14
pair nd its	-10
pair nd my	6
pair nd no	24
pair nd one	-37
pair nd painted	6
pair nd put	-22
pair nd screwed	-18
pair nd sealed	9
pair nd she's	5
pair nd taped	-5
pair nd the	-9
pair nd there's	-11
pair nd theres	-7
pair nd they're	7
pair nd three	7
pair nd took	24
pair nd two	-14
pair need one	-5
pair need to	-6
pair needs a	10
pair nettie's shelf	10
pair never know	18
pair never mind	14
pair new cord	9
pair new door	-6
pair new one	-8
pair new ones	-6
pair new tiles	15
pair next door	-8
pair no a	23
pair no backup	5
pair no drip	-7
pair no longer	-10
pair no more	20
pair no need	-9
pair no rattles	-7
pair no trip	20
pair nobody stocks	-14
pair not a	21
pair not going	15
pair not required	11
pair not the	-8
pair not three	-15
pair not two	-8
pair now it	6
pair now not	-7
pair now she	23
pair now with	6
pair number he'll	14
pair nursery sash	6
pair nut had	18
pair o all	6
pair o i	-14
pair o it's	-15
pair o no	-16
pair o not	11
pair o one	-15
pair o rings	-5
pair o that	22
pair o that's	12
pair o the	21
pair o they	12
pair of a	-16
pair of each	12
pair of em	-5
pair of it	-14
pair of the	18
pair of them	-11
pair of those	5
pair off again	-7
pair off the	38
pair oh four	9
pair oh yeah	6
pair ok cartridge	8
pair okay the	-11
pair old one	16
pair on a	-9
pair on i	21
pair on it	5
pair on that	23
pair on the	-39
pair on too	19
pair on with	-10
pair once the	-9
pair one bag	-5
pair one by	-7
pair one coat	-7
pair one double	-5
pair one finger	-10
pair one for	-6
pair one from	7
pair one hour	-7
pair one i	10
pair one in	27
pair one is	-9
pair one kit	-5
pair one more	-8
pair one new	-6
pair one of	11
pair one oh	6
pair one on	-10
pair one over	8
pair one ten	-7
pair one the	-6
pair one thirty	9
pair one tube	-8
pair one twenty	11
pair one was	-13
pair one's outta	25
pair only had	-8
pair only the	20
pair op 2	9
pair op one	-5
pair op two	-11
pair opened up	-9
pair opening is	15
pair other two	-9
pair our ceiling	-8
pair our side	11
pair out on	6
pair outta the	25
pair over by	12
pair over in	-9
pair paint it	-9
pair painted shut	11
pair pane is	-6
pair panes are	-7
pair pantry door	-6
pair pattern over	-8
pair pau used	6
pair peg rail	-6
pair picked one	11
pair picked up	-26
pair piece for	-7
pair piece of	8
pair pipe is	-22
pair place on	-8
pair planks are	11
pair plate one	12
pair ply at	12
pair pocket door	-19
pair pole motor	8
pair poles over	12
pair post is	-18
pair put a	-11
pair put in	7
pair put it	-7
pair put the	-13
pair put two	9
pair quiet as	10
pair r h	-17
pair rail got	-12
pair rail post	-12
pair rail she	6
pair range box	5
pair relief valve	-10
pair required from	11
pair reset it	16
pair restroom drain	13
pair right hand	-7
pair right side	-5
pair roll of	-7
pair roll oh	6
pair rolling good	17
pair roofer is	-9
pair room door	7
pair room please	6
pair round the	-10
pair runs good	6
pair sandbox lid	14
pair sashes run	-11
pair says forget	26
pair says its	12
pair says leave	19
pair says never	23
pair screen door	14
pair screen yesterday	6
pair screens all	6
pair screw em	-11
pair screwed a	-14
pair screws in	8
pair sealed roond	22
pair second coat	-13
pair set screw	-6
pair she bought	11
pair she has	-7
pair she says	8
pair she wants	-6
pair she'd like	-10
pair she's got	-6
pair shower 2	-13
pair shower arm	8
pair shower head	-8
pair shut the	-10
pair shuts proper	14
pair shuts with	11
pair side door	6
pair sign i	-8
pair since i	6
pair six is	11
pair skip it	6
pair sleeve anchors	34
pair solid as	-8
pair solid now	-11
pair spin room	8
pair stain block	8
pair still no	-9
pair stocks it	-9
pair stop start	-6
pair stopped at	-8
pair store had	-15
pair strip in	-13
pair stuck back	9
pair stuck down	11
pair supply line	-8
pair swings free	18
pair swings like	5
pair take that	-7
pair tell the	12
pair texted gus	14
pair thank god	20
pair that bracket	-7
pair that closet	18
pair that comes	-13
pair that door	-12
pair that drain	6
pair that flashing	-6
pair that hole	-5
pair that one	-39
pair that one's	23
pair that rail	-7
pair that room	6
pair that wall	-10
pair that whole	8
pair that's off	7
pair that's the	-5
pair that's why	-9
pair the 2	-6
pair the ac	-8
pair the ballast	-15
pair the barn	-6
pair the basement	21
pair the bay	-7
pair the beam	5
pair the bedroom's	8
pair the board	-14
pair the bottom	-15
pair the box	-16
pair the break	-6
pair the bulb	12
pair the carpet	8
pair the cartridge	7
pair the ceiling	-8
pair the check	24
pair the chute	16
pair the cistern	-8
pair the closer	17
pair the closet	23
pair the co	-11
pair the cord	-12
pair the cover	7
pair the dimmer	11
pair the dining	-8
pair the dishwasher	-6
pair the double	11
pair the drain	-9
pair the dumpster	12
pair the end	11
pair the entry	13
pair the fan	-8
pair the feed	8
pair the fire	18
pair the fist	12
pair the flapper	-6
pair the floor	-25
pair the four	8
pair the gate	-6
pair the grate	11
pair the grille	-7
pair the hall	-9
pair the hand	9
pair the henhouse	12
pair the hinge	-18
pair the hole	6
pair the house	-12
pair the inside	-8
pair the joist	-7
pair the kit	14
pair the ladder	19
pair the lamp	8
pair the landlord	-9
pair the last	-7
pair the latch	-23
pair the laundry	11
pair the left	-21
pair the mail	8
pair the mens	-9
pair the middle	-13
pair the mirror	-6
pair the mouse	-9
pair the newel	9
pair the next	19
pair the nook	-5
pair the nursery	5
pair the opener	-6
pair the other	-23
pair the outlet	-9
pair the painter	18
pair the panel	-6
pair the parlor	17
pair the patch	-13
pair the pharmacy	-8
pair the plate	21
pair the porch	-8
pair the putty	-9
pair the rail	15
pair the range	6
pair the reel	-7
pair the rod	7
pair the roll	-14
pair the roof	-8
pair the same	6
pair the sash	18
pair the screws	-6
pair the seam	-7
pair the seats	-7
pair the shelves	-14
pair the shop	11
pair the side	30
pair the siding	9
pair the six	-10
pair the slides	11
pair the soft	-8
pair the spring	28
pair the stair	-7
pair the stairs	6
pair the step	14
pair the stop	-8
pair the stove	37
pair the street	9
pair the stringer	-6
pair the studs	-6
pair the supply	-10
pair the sweep	10
pair the switch	-10
pair the table	16
pair the tack	8
pair the tank	-7
pair the tap	16
pair the three	8
pair the tile	-15
pair the tin	8
pair the toilet	12
pair the top	17
pair the track	-8
pair the track's	-6
pair the truck	-13
pair the tub	-6
pair the twenty	6
pair the two	34
pair the upper	-6
pair the usb	10
pair the valve	-14
pair the van	-24
pair the wall	-18
pair the watter	23
pair the way	15
pair the white	11
pair the whole	-16
pair the window	10
pair the yard	-8
pair them closet	17
pair them panes	-7
pair there was	6
pair there with	9
pair there's a	-17
pair they don't	12
pair they had	-27
pair they only	-7
pair they were	-9
pair thing is	13
pair thirty one	16
pair this time	-17
pair three by	12
pair three is	-19
pair three pau	6
pair through it	-14
pair tight now	8
pair tile discontinued	-9
pair tile pattern	-8
pair tiles are	-11
pair tiles by	-6
pair till friday	-5
pair time thank	-11
pair to a	-13
pair to buy	-14
pair to friday	-7
pair to go	-7
pair to monday	-7
pair to order	-5
pair to that	12
pair to the	24
pair toe kick	-6
pair toilet seat	7
pair tomorrow when	-7
pair too far	12
pair took em	-6
pair took the	12
pair track online	-8
pair track's bent	-6
pair trim off	-10
pair tub of	9
pair turned the	14
pair twelve foot	-6
pair twenty four	-7
pair twenty one	12
pair twenty two	-12
pair two by	-8
pair two clamps	-11
pair two coats	14
pair two foot	-5
pair two i	13
pair two inches	7
pair two is	23
pair two more	-7
pair two new	16
pair two of	-20
pair two screws	21
pair two the	-13
pair under nettie's	10
pair under the	-10
pair up a	-7
pair up by	9
pair up in	18
pair up monday	-6
pair up on	-11
pair up over	10
pair up the	-10
pair up there	6
pair up top	9
pair usb number	14
pair use the	-9
pair used almost	6
pair ut it	-9
pair ut it's	-10
pair ut no	-11
pair vacuum breaker	-10
pair valve is	-9
pair w the	-6
pair wad in	13
pair waits on	-11
pair wall in	9
pair wall is	-11
pair wall where	12
pair want the	13
pair wants a	-15
pair wants the	-11
pair was a	20
pair was got	12
pair was just	23
pair was nothing	9
pair was only	16
pair was the	9
pair washer box	-9
pair washer is	10
pair water at	9
pair water board	7
pair weeping at	-5
pair went to	-8
pair were out	-7
pair when it's	-8
pair when they	-7
pair where the	7
pair while i	6
pair whistle in	10
pair whole new	-8
pair whole roll	6
pair whole thing	-5
pair window 3	-5
pair window corded	-17
pair window in	7
pair window lock	13
pair wire nut	21
pair with a	24
pair with both	-6
pair with his	15
pair with me	15
pair with one	-10
pair with that	17
pair with the	19
pair won't hold	-7
pair would like	-15
pair yard called	-6
pair yeah i	6
pair yesterday forgot	6
pair you can't	25
pair you cant	-7
pair you could	8
pair you'd never	14
put false true	-92
put true false	61
put true true	-15
rarest 1	45
rarest 1 read done head no	13
rarest 1 read done head own	14
rarest 1 read done+fixed head own	39
rarest 1 read done+flaw head no	25
rarest 1 read done+flaw head own	7
rarest 1 read done+goods head no	-7
rarest 1 read done+plan head no	-5
rarest 1 read fixed head no	28
rarest 1 read fixed head own	8
rarest 1 read flaw head before	10
rarest 1 read flaw head no	-8
rarest 1 read flaw+goods head own	8
rarest 1 read goods head no	-33
rarest 1 read goods head own	-12
rarest 1 read goods+plan head own	-7
rarest 1 read none head no	12
rarest 1 read none head own	21
rarest 1 read plan head before	-10
rarest 1 read plan head no	-21
rarest 1 read plan head own	-46
rarest 2 read done head no	-8
rarest 2 read done head own	-31
rarest 2 read done+fixed head no	-14
rarest 2 read done+flaw head no	-33
rarest 2 read done+flaw head own	-6
rarest 2 read done+plan head no	-8
rarest 2 read fixed head no	9
rarest 2 read fixed head own	6
rarest 2 read flaw head before	9
rarest 2 read flaw head no	25
rarest 2 read flaw head own	17
rarest 2 read flaw+plan head no	-7
rarest 2 read goods head no	-15
rarest 2 read goods head own	7
rarest 2 read goods+plan head no	-5
rarest 2 read none head before	14
rarest 2 read none head no	7
rarest 2 read none head own	-23
rarest 2 read plan head before	-12
rarest 2 read plan head no	24
rarest 2 read plan head own	37
rarest 3	-14
rarest 3 read done head own	21
rarest 3 read done+plan head own	8
rarest 3 read fixed head no	8
rarest 3 read flaw head no	-10
rarest 3 read flaw head own	-27
rarest 3 read plan head no	-13
rarest 3 read plan head own	6
rarest 4	-55
rarest 4 read done head before	12
rarest 4 read done head named	13
rarest 4 read done head no	-6
rarest 4 read done+fixed head before	16
rarest 4 read done+fixed head no	-12
rarest 4 read done+flaw head named	-20
rarest 4 read done+flaw head no	-6
rarest 4 read done+plan head no	8
rarest 4 read fixed head before	23
rarest 4 read fixed head no	-9
rarest 4 read flaw head own	-21
rarest 4 read flaw+goods head before	-7
rarest 4 read goods head before	-25
rarest 4 read none head own	-15
rarest 4 read plan head before	-26
read done flaw	21
read done work	19
read done+fixed flaw	21
read done+fixed work	5
read done+fixed+plan flaw	13
read done+flaw flaw	7
read done+flaw work	-16
read done+plan flaw	-20
read done+plan work	14
read fixed flaw	82
read fixed work	-25
read fixed+plan flaw	13
read flaw flaw	5
read flaw work	-14
read flaw+goods flaw	-9
read flaw+plan flaw	-21
read goods flaw	-60
read goods work	-21
read goods+plan flaw	-12
read none flaw	-6
read none work	22
read plan flaw	-61
size long	-36
size short	12
waiting	-39
well false false	-23
well false true	-88
well true false	74
well true true	5
word 1	-59
word 10	-28
word 12	-9
word 14	-7
word 15	-14
word 2	-34
word 20	-6
word 2x4	-7
word 30	-12
word 36	-11
word 5	-30
word 6	-28
word 8	10
word 9	9
word a	32
word about	19
word abt	-9
word ac	-9
word add	-9
word after	28
word again	-56
word ain't	-7
word aint	-6
word air	-10
word alarms	-7
word all	8
word almost	5
word alone	9
word along	23
word already	13
word also	-15
word am	8
word an	-17
word another	-7
word answer	14
word any	-7
word anyhow	12
word anything	6
word anyway	-5
word anywhere	26
word apart	-7
word apt	-16
word are	13
word around	-26
word arrive	31
word as	31
word asked	-13
word at	-34
word ause	-14
word baby	-6
word back	17
word backed	-15
word bad	-17
word bag	-10
word bags	-10
word ballast	-9
word bangs	16
word bar	-12
word base	-18
word bathroom	-10
word battery	-11
word be	-20
word bead	-9
word been	-18
word behind	31
word bell	-12
word below	-10
word bench	-8
word bent	7
word bifold	-6
word big	7
word bit	9
word blade	12
word block	-9
word blocking	11
word bloke	9
word blow	-8
word blue	-6
word boards	-7
word bolt	17
word bolts	-9
word bone	14
word boot	12
word both	43
word bought	13
word bowl	6
word bracket	-24
word brackets	-13
word brass	-29
word break	-6
word breaker	-27
word broke	-8
word bucket	-8
word butter	13
word buy	-28
word by	-19
word cabinet	-6
word cable	17
word called	-43
word cam	12
word came	33
word can	-9
word can't	31
word carpet	-8
word cartridge	-10
word cast	-5
word cat	-13
word caulked	-7
word ceiling	-18
word cement	-9
word chair	-9
word change	9
word changed	8
word changing	9
word check	-7
word chirping	-5
word christmas	10
word chrome	-6
word chute	12
word clamp	11
word clamps	10
word clean	-10
word cleaned	29
word cleared	7
word clears	27
word close	12
word closer	-11
word closet	6
word closing	8
word co	-17
word coat	-27
word coffee	7
word cold	-6
word color	-6
word come	35
word comes	-20
word complete	23
word cooked	13
word cord	-12
word corner	-8
word could	10
word counted	-11
word counter	-5
word cover	15
word crack	-8
word cracked	-15
word cross	20
word crown	-6
word cut	-6
word d	-11
word da	7
word damp	-19
word day	5
word dead	-19
word deck	-12
word depot	-6
word did	45
word didn't	8
word discontinued	-9
word dishwasher	-7
word do	-25
word dock	7
word doctor	-9
word does	-5
word doesn't	25
word doesnt	16
word dog	13
word don't	15
word dont	-15
word door's	-9
word doors	-6
word double	-13
word dover	-8
word down	34
word downstairs	10
word drags	-8
word drain	-16
word drap	23
word drawer	-23
word dried	-16
word drip	-22
word drips	-7
word driver	-10
word drop	11
word dropped	22
word dry	59
word drywall	-7
word dumpster	12
word each	9
word ecause	-7
word edge	-24
word eight	-7
word eighteen	-15
word eighths	12
word eights	-5
word eighty	-6
word either	-13
word eleven	12
word end	-11
word ends	-6
word entry	-5
word even	-6
word every	-22
word everything	5
word exam	-8
word extension	9
word extra	-10
word eye	13
word fan	-15
word far	11
word faucet	-7
word feed	-6
word feet	-11
word fifty	-7
word filled	25
word filter	8
word find	8
word fine	-17
word finger	-10
word finish	8
word finished	-26
word fire	28
word first	15
word five	-24
word fix	10
word fixed	7
word flange	7
word flapper	-7
word flashing	-5
word flat	20
word flight's	13
word float	-7
word floor	-17
word foam	-6
word foot	-29
word footer	-7
word for	-62
word forget	41
word four	-31
word free	26
word friday	-29
word from	-14
word front	-29
word ft	-7
word full	11
word furnace	13
word gal	-11
word gallon	-7
word gave	-9
word get	-7
word gets	-9
word getting	-6
word gfci	16
word glass	-16
word glue	8
word glued	17
word go	-31
word god	20
word goes	17
word going	47
word gone	12
word gonna	10
word good	58
word got	-22
word gotta	-14
word grab	-8
word grate	-10
word grease	24
word grille	-7
word grout	-7
word gus	9
word gutter	-9
word guy	-8
word guys	12
word had	15
word half	12
word hand	-13
word handle	-35
word handrail	-9
word hanging	23
word hangs	-8
word happy	9
word hard	11
word hardware	-9
word has	-10
word hauling	10
word have	-14
word he'll	11
word he's	25
word head	11
word hear	34
word heat	-18
word heater	8
word heavy	-6
word held	16
word hen	-26
word henhouse	12
word her	37
word here	-23
word him	-7
word himself	-11
word hinge	-25
word hinges	-30
word history	11
word hit	-12
word hold	-7
word hole	7
word holes	-8
word home	-14
word hook	-8
word hooked	13
word hose	24
word hour	-7
word house	-14
word how	8
word hundred	-10
word hung	-19
word i	-17
word i'll	-9
word i'm	-18
word i've	-11
word if	-6
word ill	-10
word im	-8
word inch	-41
word instead	-6
word insulated	-6
word insulation	5
word into	-21
word iron	-7
word is	-20
word isn't	12
word isnt	-9
word it	46
word it's	-14
word its	7
word itself	11
word joist	-8
word jumped	-10
word just	-26
word keep	-8
word keeps	-6
word kicked	13
word kind	-20
word kit	-28
word kitchen	-16
word know	12
word label	13
word ladder	21
word lady	11
word lags	-9
word landing	10
word landlord	12
word landlord's	24
word last	-20
word latch	-12
word laying	-7
word leave	10
word left	-11
word leg	10
word length	-6
word level	10
word lid	9
word light	-30
word like	56
word line	-12
word listen	13
word lit	24
word little	-21
word locks	16
word long	-5
word longer	-14
word looked	-11
word looking	-12
word loose	34
word low	-9
word lumber	-14
word mail	-6
word maple	-10
word maybe	7
word meanwhile	12
word measured	-6
word mens	-9
word middle	-13
word mill	-8
word min	15
word mind	10
word mine	-7
word minute	6
word minutes	9
word mirror	-11
word missing	-6
word mm	-6
word moen	-5
word monday	-14
word more	6
word motor	-14
word mouse	7
word moves	-8
word moving	-7
word mrs	-10
word much	-7
word must	-13
word my	32
word myself	25
word nd	-10
word need	-34
word neither	-7
word nettie's	21
word never	27
word newel	11
word nice	20
word nine	-11
word nineteen	-13
word ninety	-7
word nipped	-15
word no	60
word nobody	-14
word not	-7
word nothin	16
word nothing	41
word now	90
word number	9
word nursery	12
word nut	12
word o	-32
word oak	-7
word of	-27
word off	43
word office	-7
word oh	20
word oiled	-15
word ok	10
word okay	16
word old	-31
word on	30
word ones	-8
word only	-35
word open	17
word opener	-5
word opens	6
word or	-12
word order	-11
word ordered	-26
word other	-17
word ought	10
word our	-14
word ours	-6
word out	-6
word outlet	-24
word outside	-8
word outta	25
word over	7
word overnight	-16
word owner	10
word pail	-8
word paint	-17
word painted	6
word painter	15
word painting	-6
word pair	-7
word pan	-7
word panel	7
word panes	-16
word paper	-6
word part	-7
word past	22
word pattern	-7
word pau	12
word peg	-7
word people	-6
word pergola	-6
word photocell	-7
word pick	-7
word picked	-16
word piece	19
word pieces	11
word pine	-10
word pipe	-7
word place	-19
word planed	-14
word plate	8
word please	6
word plugged	-12
word plum	12
word plus	22
word pocket	-7
word point	-13
word post	-9
word poured	-8
word pressure	13
word pretty	7
word primed	8
word pull	-13
word pump	-6
word push	-8
word put	13
word putting	8
word putty	-8
word quarter	-6
word quiet	5
word quit	30
word r	-18
word rack	-6
word radiator	-6
word rail	-26
word rain	-6
word rained	-7
word ran	38
word range	-8
word rattles	-7
word ready	11
word red	8
word regulator	18
word rehung	10
word relief	-10
word replace	-5
word required	11
word reset	23
word rest	23
word restroom	5
word right	24
word rigid	5
word ring	-5
word rings	-5
word ripped	-6
word rock	7
word rocking	10
word rod	-24
word roll	-11
word rolled	5
word rollers	-14
word rolling	17
word roof	-8
word roofer	-10
word room's	-17
word roond	22
word round	-9
word rulers	-8
word run	-9
word running	9
word runs	22
word rusted	-9
word s	-15
word said	-9
word sand	8
word sanded	21
word sanding	7
word sash	6
word sat	6
word saw	-7
word says	39
word scratch	6
word screaming	-5
word screen	-23
word screw	15
word screwed	11
word screws	21
word seal	-9
word sealed	7
word seam	-6
word seat	-10
word second	-12
word see	21
word seized	-10
word set	-10
word seven	8
word sharp	7
word she	-9
word she'd	-10
word she's	43
word sheet	-6
word sheets	10
word shelf	-28
word shellac	7
word shimmed	21
word shop	-14
word short	15
word should	9
word showed	-11
word shower	-22
word shut	-23
word shuts	23
word side	19
word sides	11
word sign	-8
word sign's	-10
word single	-5
word sink	-12
word sister	-7
word sits	11
word sitting	-16
word six	19
word size	-10
word skip	23
word slats	-13
word smoke	-7
word smooth	7
word soaked	-6
word soldered	-8
word some	-8
word somebody	8
word spare	-14
word special	-8
word split	-24
word spring	12
word springs	-8
word square	-8
word squirrel	7
word stain	-16
word stairs	-7
word stall	-10
word start	-5
word steady	21
word steps	9
word still	-28
word stock	-10
word stocks	-14
word stools	-6
word stop	-14
word store	-30
word stove	14
word straight	30
word street	-6
word strike	-11
word stringer	-7
word strip	-20
word stripped	-17
word stuck	36
word studs	-6
word stuff	22
word suite	16
word summer	-8
word supply	-25
word swapped	16
word sweating	-7
word sweep	-17
word swings	23
word switch	-25
word t	-7
word table	-8
word takes	-19
word tannie	17
word tap	-13
word tape	8
word taped	29
word tell	11
word ten	-22
word tested	26
word texted	13
word than	9
word thank	14
word that's	-7
word thats	-15
word the	-37
word their	-10
word them	5
word there's	-25
word theres	-10
word they	-48
word they'd	-9
word they're	15
word theyre	7
word thing	38
word third	9
word thirty	22
word this	-14
word those	26
word thought	24
word thread	6
word three	-37
word through	-14
word thru	20
word thumb	-19
word thursday	-17
word tight	35
word tightened	15
word tile	-6
word tiles	-8
word till	-16
word time	-19
word timer	-8
word times	-6
word to	-25
word today	-5
word toggles	10
word toilet	-13
word told	-11
word tomorrow	-22
word too	7
word took	17
word top	7
word towel	-11
word town	-13
word track	-9
word treated	-6
word trim	-14
word tripped	27
word truck	8
word tube	28
word tuesday	-19
word turn	21
word turned	30
word turns	25
word twelve	-16
word twenty	-7
word twice	-13
word two	6
word two's	12
word uh	14
word under	-18
word unit	-16
word until	-8
word up	29
word upper	-9
word upstairs	39
word us	25
word usb	-8
word use	-12
word used	6
word ut	-52
word vacuum	-8
word valve	-23
word valves	-19
word varnish	-7
word vent	-15
word volts	12
word w	-13
word wait	-5
word waits	-13
word wall	-29
word walls	-18
word want	-6
word wants	-24
word warm	-9
word was	-6
word washer	-9
word water	11
word watter	23
word wax	-6
word way	38
word we	-44
word weatherstrip	-6
word wednesday	-22
word week	-6
word weeping	-8
word well	43
word were	-12
word wet	-16
word what	-12
word what's	-9
word when	-26
word where	10
word while	-15
word whistle	-14
word white	-8
word whole	-11
word why	-9
word window	-12
word wire	24
word with	35
word wobble	-6
word won't	6
word wont	-6
word wood	-18
word worn	-13
word wrap	-6
word wrong	-7
word x	-23
word ya	18
word yard	-11
word yeah	7
word year	11
word yes	-16
word yesterday	18
word yet	-19
word you	6
word you'd	14
work	12
`;
