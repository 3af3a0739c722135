/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-13
after - -	-13
after are	20
after at	17
after at the	23
after back	7
after back up	7
after bought	-21
after bought -	-28
after called	-18
after came	5
after came -	6
after cap	-12
after come	33
after cut	14
after doesn't	13
after doesn't bang	9
after down	7
after goes	6
after got	6
after had a	9
after handle	-6
after has	12
after has a	14
after here	-10
after i	-15
after i found	-8
after is	27
after is a	-12
after is insulated	-6
after is the	-8
after it	-16
after it's	-11
after its	-12
after just	-14
after kit	-8
after need	-7
after next	-6
after not	-6
after off	36
after on -	7
after only	-6
after out	9
after out of	9
after pattern	-9
after pattern over	-9
after planed	-6
after planed nae	-6
after reads	-5
after she	17
after still	-5
after stop	-7
after strip	-15
after strip -	-15
after the	-25
after tight	10
after tight -	6
after to	-7
ahead -	24
ahead 2nd	5
ahead a	24
ahead back	-25
ahead brass	-6
ahead closet	23
ahead deck	-12
ahead floor	-6
ahead front	-11
ahead got	14
ahead mail	7
ahead nd	-24
ahead new	26
ahead nine	-6
ahead of	-12
ahead one	-17
ahead pantry	13
ahead pocket	-11
ahead porch	-15
ahead room	15
ahead that	-25
ahead the	22
ahead them	17
ahead those	8
ahead toilet	-8
ahead window	11
ails false denies false read done	9
ails false denies false read done+fixed	-11
ails false denies false read done+flaw	13
ails false denies false read done+plan	-13
ails false denies false read fixed	-21
ails false denies false read fixed+plan	10
ails false denies false read flaw	14
ails false denies false read flaw+goods	-8
ails false denies false read flaw+plan	-7
ails false denies false read goods	-27
ails false denies false read goods+plan	-6
ails false denies false read none	15
ails false denies false read plan	-28
ails false denies true read done	14
ails false denies true read done+fixed	17
ails false denies true read fixed	12
ails false denies true read flaw	-12
ails false denies true read flaw+plan	-7
ails false denies true read none	-23
ails false denies true read plan	7
ails true denies false read done	-24
ails true denies false read done+fixed	13
ails true denies false read done+flaw	-10
ails true denies false read fixed	75
ails true denies false read flaw	-13
ails true denies false read none	-6
ails true denies false read plan	-8
ails true denies true read done	21
ails true denies true read flaw	11
ails true denies true read plan	-6
any	-12
asked false	-10
before 0	-33
before 1	21
before 2	16
cure anchor denies false	6
cure back denies false	-16
cure back denies true	-24
cure bent denies false	12
cure block denies false	23
cure budg denies true	19
cure burn denies false	10
cure butter denies false	7
cure catch denies false	20
cure clear denies false	21
cure clo denies false	-13
cure coat denies false	-11
cure cold denies false	-5
cure cut denies false	-48
cure cut denies true	-6
cure dead denies false	-14
cure down denies false	6
cure drag denies false	-7
cure drain denies false	8
cure dry denies false	24
cure epoxy denies false	-13
cure faucet denies false	15
cure fill denies false	11
cure heat denies false	11
cure hol denies false	-10
cure hot denies false	30
cure in denies false	-35
cure in denies true	-37
cure leak denies false	-18
cure leak denies true	14
cure light denies false	-25
cure lock denies false	7
cure mud denies false	12
cure on denies false	-25
cure on denies true	-6
cure piec denies false	9
cure quiet denies false	9
cure quit denies true	14
cure replac denies false	-20
cure rod denies true	8
cure roll denies false	-14
cure run denies false	25
cure run denies true	5
cure seal denies false	-8
cure shutof denies true	-6
cure slid denies false	-6
cure solid denies false	11
cure stay denies false	-14
cure steady denies false	12
cure sweat denies true	-10
cure swing denies false	13
cure swing denies true	-7
cure tight denies false	7
cure toggl denies false	7
cure trip denies false	18
cure trip denies true	14
cure turn denies false	26
cure up denies false	-8
cure up denies true	-6
cure whit denies false	-10
cure wood denies false	-16
cured false ails false denies false	-22
cured false ails false denies true	-21
cured false ails true denies false	7
cured false ails true denies true	-13
cured false head before denies false	-8
cured false head before denies true	-10
cured false head named denies false	28
cured false head no denies false	-18
cured false head no denies true	-6
cured false head own denies false	-18
cured false head own denies true	-32
cured false read done	18
cured false read done+fixed	15
cured false read done+flaw	-14
cured false read done+plan	-9
cured false read fixed	46
cured false read flaw	-7
cured false read flaw+goods	-10
cured false read flaw+plan	-10
cured false read goods	-37
cured false read none	-26
cured false read plan	-17
cured true ails false denies false	-6
cured true ails false denies true	16
cured true ails true denies false	15
cured true ails true denies true	38
cured true head before denies true	10
cured true head named denies false	6
cured true head no denies false	-12
cured true head no denies true	21
cured true head own denies false	14
cured true head own denies true	25
cured true read done+flaw	26
cured true read fixed	13
cured true read flaw+plan	-8
cured true read goods	8
cured true read none	23
cured true read plan	-17
cures 0 true	-47
cures 1 true	16
cures 2 true	41
days few	11
days many	-46
days none	19
due false	-36
due true	40
end 1	-13
end 2	7
end 20	-15
end 4	8
end 8	25
end adhesive	-18
end again	-18
end all	30
end already	21
end anyhow	13
end anyway	-7
end anywhere	12
end arm	-8
end arrive	30
end back	20
end backup	5
end bag	-10
end bang	19
end bangs	17
end bar	-5
end battery	-10
end black	-6
end blades	-8
end board	13
end boards	-15
end bolt	-12
end both	9
end bought	30
end box	23
end br	14
end bracket	-7
end brackets	-19
end breaker	-24
end bulb	-5
end butter	16
end buy	-7
end called	-11
end came	13
end can	14
end cap	-7
end cartridge	13
end cement	-17
end changed	17
end chimney	5
end cleaned	12
end close	13
end closer	-7
end closet	17
end coat	9
end coats	8
end come	39
end cord	-7
end corded	-9
end counter	-17
end cracked	-13
end day	7
end dead	-9
end deep	8
end dimmer	13
end discontinued	-5
end door	11
end dover	-9
end down	-15
end drap	25
end dripping	9
end drips	-15
end dry	41
end either	-12
end fan	-7
end far	9
end feet	-5
end filled	-10
end finally	-14
end fine	-8
end finger	-10
end finished	-20
end first	8
end five	-16
end flat	8
end flour	5
end foam	-7
end foot	-13
end footer	-5
end free	7
end friday	-17
end ft	-11
end glued	5
end go	-10
end god	16
end gone	-10
end good	10
end grate	12
end grout	-5
end hall	5
end hand	-22
end head	-5
end here	7
end him	14
end hinges	-8
end history	9
end hold	-10
end hole	-13
end holes	-6
end home	-11
end hot	34
end hundred	-11
end in	19
end inch	-18
end insulated	-6
end is	14
end it	29
end itself	7
end kind	-13
end ladder	28
end latch	-29
end length	-5
end level	11
end light	-9
end lights	-8
end lock	-22
end loose	25
end lunch	16
end me	-7
end miller's	-5
end monday	-18
end motor	-6
end mouse	7
end moving	-7
end mud	11
end new	17
end next	-8
end nice	14
end no	-13
end noon	-9
end nothing	7
end now	28
end off	6
end on	34
end ones	-11
end online	-9
end only	-10
end open	15
end ordered	-13
end out	-27
end outlet	-5
end over	-8
end overnight	-10
end paint	-6
end pieces	15
end pipe	-9
end place	-6
end please	5
end pretty	15
end quit	8
end ready	13
end right	5
end ring	-7
end rm	10
end rock	5
end room	13
end roond	19
end run	-12
end sanded	28
end screw	11
end screwed	7
end sealed	9
end set	-9
end seven	-6
end shelf	8
end shelves	9
end shop	-7
end side	17
end siding	8
end sign	-5
end silicone	-5
end slider	-7
end snapped	-16
end spare	-9
end squirrel	17
end steady	7
end stock	-8
end stop	-16
end store	-11
end straight	22
end stripped	-21
end summer	-6
end swapped	18
end switch	-13
end table	8
end tap	13
end taped	19
end tested	24
end them	-6
end there	11
end thing	18
end those	-11
end thread	7
end three	-15
end tight	21
end tile	-9
end tiles	12
end time	-6
end tin	9
end to	7
end today	-5
end toggles	5
end tomorrow	-9
end too	-7
end top	19
end town	-8
end trip	7
end truck	-12
end tube	32
end tuesday	-10
end twelve	-7
end twice	-6
end two	-16
end us	16
end van	-7
end wall	-24
end watter	22
end way	24
end wednesday	-11
end white	-19
end wood	-16
end yes	-7
end yet	-8
first 1	-9
first 2	-20
first 4	-7
first 5	-11
first 8	6
first a	7
first ac	7
first also	-16
first ause	-14
first back	-13
first base	12
first bath	23
first bedroom	-7
first behind	14
first bench	25
first blind	7
first board	9
first boards	14
first boat	-5
first boot	9
first both	9
first bottom	12
first bought	-10
first box	7
first breaker	-12
first called	13
first carpet	-10
first cartridge	8
first chapel	-8
first clamps	14
first cleaned	18
first closer	-12
first corner	-14
first cut	8
first did	15
first do	-6
first door	8
first dryer	12
first edge	-8
first fan	13
first filled	26
first filter	26
first first	-7
first fished	9
first five	-6
first flag	9
first floor	-6
first found	17
first from	-6
first front	8
first gate	11
first gets	8
first gfci	18
first glass	-6
first goes	-15
first got	-44
first gutter	-10
first hallway	-5
first handrail	26
first he's	14
first hen	-24
first hinges	38
first hood	-24
first i	-63
first i've	-8
first is	15
first its	-28
first just	-7
first kitchen	-15
first landlord's	22
first last	-15
first latch	18
first laundry	-6
first left	19
first light	13
first lock	10
first make	-8
first me	-9
first mill	-6
first mirror	-20
first mrs	-6
first new	-9
first nine	-7
first no	-37
first nothing	15
first nursery	11
first o	-19
first ok	-7
first okay	14
first old	-16
first once	-5
first one	-26
first op	11
first ordered	-7
first ours	-15
first outlet	14
first oven	-11
first owner	9
first paper	12
first picked	-16
first pipe	-20
first pocket	-15
first pole	23
first poles	9
first post	-14
first pulled	6
first put	-6
first r	-9
first rail	-27
first rained	-8
first ran	29
first replace	-8
first restroom	17
first right	7
first sandbox	11
first saturday	15
first screens	9
first second	6
first she	-24
first she's	19
first shelf	-8
first sill	10
first sink	19
first six	16
first smoke	21
first stall	-5
first still	-6
first stopped	-16
first strike's	5
first swim	-9
first tap	7
first tape	-8
first texted	9
first that	26
first that's	-19
first the	-13
first them	9
first there's	-13
first they	-11
first they're	-9
first those	8
first three	-7
first threshold	20
first tiles	-10
first told	-8
first took	-7
first tread	18
first turned	14
first two	-12
first u11	-9
first uh	6
first ut	-41
first wall	7
first wants	-7
first washer	-5
first we	-12
first your	25
flaw	-5
flaw said false	-23
head before read done	25
head before read fixed	11
head before read flaw	6
head before read flaw+goods	-7
head before read goods	-10
head before read none	15
head before read plan	-35
head named	22
head named read done	5
head no	-19
head no read done+fixed	-23
head no read done+fixed+plan	10
head no read done+goods	-6
head no read fixed	27
head no read fixed+plan	11
head no read flaw+goods	-5
head no read flaw+goods+plan	12
head no read flaw+plan	-15
head no read goods	-42
head no read goods+plan	-5
head no read none	14
head own	-7
head own read done+fixed	29
head own read done+flaw	-11
head own read done+plan	6
head own read flaw	-21
head own read flaw+plan	-5
head own read none	-23
met false	33
met true	-82
named 0 head no	-83
named 0 head own	-26
named 1 head named	12
named 1 head no	28
named 1 head own	30
named 2 head named	11
named 2 head no	58
named 2 head own	-11
open	7
own 0	-11
own 0 read done+flaw	-17
own 0 read done+plan	13
own 0 read fixed	11
own 0 read goods	-17
own 0 read plan	-13
own 1	-45
own 1 read done	16
own 1 read done+fixed	8
own 1 read done+flaw	-13
own 1 read done+flaw+goods	9
own 1 read done+goods	-8
own 1 read fixed+plan	10
own 1 read flaw	-20
own 1 read flaw+goods	-6
own 1 read flaw+goods+plan	12
own 1 read flaw+plan	-13
own 1 read goods	-11
own 1 read goods+plan	-6
own 1 read none	-5
own 1 read plan	-23
own 2	24
own 2 read done+flaw	8
own 2 read done+plan	-9
own 2 read fixed	25
own 2 read flaw	9
own 2 read flaw+plan	-6
own 2 read goods	-16
own 3	21
own 3 read done	13
own 3 read done+flaw	11
own 3 read goods	-5
own 3 read none	9
pair 1 in	-7
pair 12 ft	-11
pair 2 coats	-6
pair 3 16	7
pair 3 8	11
pair 8 in	7
pair a bead	-8
pair a board	7
pair a dead	-6
pair a door	-6
pair a drap	25
pair a fire	11
pair a hole	15
pair a latch	-15
pair a ledger	5
pair a leg	8
pair a mouse	6
pair a new	-23
pair a piece	7
pair a plate	8
pair a rock	5
pair a screw	-13
pair a spare	-9
pair a squirrel	17
pair a truck	17
pair a wad	17
pair about a	-6
pair about his	13
pair about the	22
pair after all	20
pair again right	-6
pair against the	11
pair all day	-9
pair all four	11
pair all of	-11
pair all the	-14
pair all three	23
pair along the	-7
pair also got	-6
pair also the	-7
pair an inch	-6
pair anchor cement	-14
pair answer monday	9
pair are all	-6
pair are on	38
pair are rolling	14
pair are stripped	-10
pair are stuck	6
pair around the	-5
pair as a	11
pair as the	-8
pair at all	8
pair at home	-10
pair at it	-12
pair at miller's	-5
pair at that	-6
pair at the	-11
pair back from	-5
pair back in	15
pair back it'll	5
pair back of	7
pair back on	-43
pair back room	-21
pair back to	-5
pair back up	13
pair ballast in	-9
pair base is	6
pair before the	14
pair behind furnace	13
pair behind it	-10
pair behind the	9
pair bell we'll	-6
pair bench is	12
pair board about	10
pair board on	-7
pair board two	20
pair boards are	21
pair boards down	-5
pair boat place	-6
pair both in	-6
pair both sashes	-12
pair both sides	14
pair bought the	-9
pair bowl one	-6
pair box i	7
pair box in	-16
pair box is	-6
pair box of	-10
pair bracket in	-17
pair bracket is	11
pair broken in	-5
pair by eight	10
pair by itself	10
pair by six	-8
pair by the	-14
pair cabinet shop	-8
pair called the	-7
pair came in	-14
pair can push	-5
pair can't be	-10
pair can't see	14
pair cap nobody	-5
pair caps on	-25
pair care of	6
pair carpet tile	-5
pair cart is	9
pair ceiling tile	-11
pair chain on	-9
pair chapel doors	-8
pair check for	11
pair check valve	29
pair chute door	17
pair closer arm	-19
pair closer came	5
pair closes it	17
pair closet door	9
pair closet doors	14
pair closet rod	6
pair co op	-6
pair coat of	-13
pair coat on	-8
pair come off	14
pair come up	-7
pair comes in	-10
pair could the	-7
pair cut out	-8
pair dae efter	-6
pair day door's	7
pair deck boards	-13
pair did it	7
pair did the	29
pair dining room	10
pair doesn't bang	19
pair doesnt want	18
pair don't get	12
pair don't have	-7
pair door 3	6
pair door closer	-9
pair door closes	17
pair door doesn't	19
pair door found	-9
pair door i	-14
pair door in	-10
pair door is	8
pair door stop	-7
pair door trim	-6
pair door with	-5
pair door's back	-24
pair door's planed	-6
pair door's rehung	7
pair doors are	8
pair double check	11
pair down to	22
pair drags on	-7
pair drain had	17
pair dried out	-6
pair drip is	-5
pair dry as	7
pair dry at	8
pair each meanwhile	11
pair efter the	-6
pair eight foot	-9
pair eighteen inch	-7
pair end cap	14
pair epoxy finally	-5
pair exam one	8
pair exam two	-6
pair exit sign	-6
pair fill valve	-16
pair finally one	-5
pair find that	18
pair finger like	7
pair finish is	17
pair first coat	-18
pair first job	7
pair first thing	19
pair fist was	11
pair five minutes	11
pair flag light	9
pair flat two	13
pair floor drain	-10
pair floor reads	-9
pair for flat	11
pair for now	-21
pair for that	-13
pair for the	6
pair forget the	19
pair found a	30
pair found at	6
pair found our	-9
pair found the	-14
pair four foot	-5
pair fourteen by	-10
pair from a	10
pair from my	9
pair from our	12
pair from the	-32
pair front door	-9
pair ft of	23
pair furnace is	14
pair get a	7
pair get the	10
pair gets a	-9
pair gets replaced	-8
pair getting a	-9
pair gfci in	24
pair goes all	-14
pair goes in	-10
pair goes up	44
pair going anywhere	34
pair going in	16
pair going to	18
pair good too	14
pair good while	-6
pair got a	-19
pair got at	-7
pair got both	-11
pair got it	5
pair got its	28
pair got the	-33
pair got two	8
pair gus the	9
pair gutter is	-10
pair h window	-9
pair had a	17
pair had epoxy	-5
pair had no	-14
pair had one	41
pair had to	-9
pair had was	-15
pair half the	5
pair hallway light	-5
pair hand one	12
pair hanging it	-6
pair hangs on	-6
pair has gone	10
pair has one	-12
pair have it	-7
pair have the	6
pair he had	6
pair he says	31
pair he wants	8
pair he'll answer	9
pair henhouse now	9
pair hinges came	42
pair his mind	7
pair holes are	-9
pair holes in	5
pair hung on	-10
pair hung the	-8
pair i bent	17
pair i called	-5
pair i can	-9
pair i can't	-13
pair i cut	-18
pair i did	34
pair i found	-11
pair i gave	-7
pair i had	48
pair i hung	-14
pair i just	5
pair i keep	-8
pair i left	-8
pair i looked	-7
pair i opened	13
pair i picked	6
pair i pulled	-11
pair i ran	-12
pair i screwed	-7
pair i stuck	27
pair i think	-6
pair i told	-12
pair i wanted	11
pair i was	5
pair in already	-6
pair in at	-5
pair in back	-11
pair in bedroom	6
pair in behind	8
pair in dover	-9
pair in flat	-5
pair in her	6
pair in his	10
pair in i	12
pair in it	41
pair in my	9
pair in on	-5
pair in stock	-7
pair in that	16
pair in three	-9
pair in too	15
pair in town	-6
pair in white	-11
pair inside of	-8
pair into the	-6
pair is a	-18
pair is back	8
pair is bent	-10
pair is broken	-5
pair is close	24
pair is cut	10
pair is done	-6
pair is finish	17
pair is gone	-17
pair is good	-24
pair is hanging	8
pair is history	9
pair is in	34
pair is insulated	-6
pair is off	-7
pair is old	-6
pair is open	-7
pair is solid	16
pair is straight	18
pair is stripped	-7
pair is the	-8
pair is tuesday	-8
pair is up	40
pair it again	-10
pair it ain't	-5
pair it bangs	17
pair it came	-19
pair it closes	-12
pair it for	-10
pair it four	-9
pair it gets	-13
pair it it's	-7
pair it like	16
pair it needs	13
pair it no	-10
pair it now	-13
pair it off	28
pair it on	20
pair it over	5
pair it twice	-12
pair it wants	-9
pair it was	9
pair it with	17
pair it'll be	-6
pair it'll hold	5
pair it's a	-10
pair it's dry	5
pair it's just	-9
pair it's like	-15
pair it's meant	7
pair it's not	11
pair it's on	40
pair it's solid	-6
pair it's the	-21
pair it's up	7
pair its a	-7
pair its mud	11
pair its on	-19
pair its sitting	-9
pair its the	-11
pair its too	9
pair job of	7
pair jumped on	-6
pair kit its	-5
pair kitchen faucet	-5
pair ladder bolt	-5
pair ladder's good	-9
pair last night	16
pair last two	-8
pair lateral 2	18
pair leave it	-9
pair leave the	25
pair ledger on	5
pair left side	7
pair leg under	8
pair lid shuts	11
pair light not	-5
pair light over	-5
pair like butter	15
pair like it	16
pair like it's	7
pair like new	18
pair like the	-15
pair mail cart	7
pair make it	-6
pair make that	-8
pair meant to	7
pair meanwhile the	11
pair mill called	-6
pair mind on	7
pair monday now	-8
pair monday when	-5
pair more holes	5
pair more whistle	14
pair mouse hole	-6
pair moved it	-5
pair moved the	8
pair moves to	-12
pair mrs d	-10
pair my coat	15
pair nae point	-6
pair nd for	-6
pair nd gets	-10
pair nd he	-11
pair nd i	-21
pair nd it	26
pair nd its	-9
pair nd my	7
pair nd no	25
pair nd one	-32
pair nd put	-20
pair nd screwed	-22
pair nd sealed	11
pair nd she	-7
pair nd she's	10
pair nd taped	-10
pair nd tested	5
pair nd the	-26
pair nd there's	-10
pair nd theres	-5
pair nd they're	5
pair nd three	10
pair nd took	19
pair nd two	-11
pair needs a	11
pair nettie's shelf	8
pair never know	16
pair never mind	15
pair new cord	11
pair new door	-7
pair new one	-10
pair new ones	-7
pair new tiles	10
pair next door	-5
pair no a	25
pair no backup	5
pair no drip	-11
pair no longer	-8
pair no more	18
pair no need	-6
pair no trip	9
pair nobody stocks	-10
pair not a	16
pair not going	14
pair not required	12
pair not the	-11
pair not three	-10
pair not two	-6
pair now it	9
pair now not	-7
pair now she	19
pair now that	-7
pair now the	6
pair number he'll	9
pair nursery sash	11
pair nut had	11
pair o all	7
pair o i	-22
pair o it's	-11
pair o no	-16
pair o not	12
pair o one	-13
pair o rings	-7
pair o that	27
pair o that's	20
pair o the	13
pair o they	12
pair o we	-11
pair of a	-13
pair of each	11
pair of em	-5
pair of it	-12
pair of the	11
pair of them	-10
pair off again	-9
pair off in	-5
pair off the	36
pair oh four	10
pair ok cartridge	7
pair okay the	-6
pair old one	15
pair on a	-13
pair on i	21
pair on it	-12
pair on that	21
pair on the	-46
pair on too	17
pair once the	-7
pair one bag	-5
pair one by	-7
pair one finger	-7
pair one from	9
pair one i	8
pair one in	25
pair one is	-9
pair one kit	-6
pair one more	-7
pair one of	12
pair one oh	9
pair one on	-8
pair one over	6
pair one ten	-7
pair one thirty	6
pair one tube	-8
pair one twenty	12
pair one was	-5
pair one's outta	32
pair only had	-6
pair only the	14
pair op 2	12
pair op two	-8
pair opened up	-8
pair opening is	11
pair other two	-7
pair our ceiling	-9
pair our side	12
pair out on	8
pair outta the	32
pair over by	9
pair over in	-10
pair over the	10
pair painted shut	12
pair pantry door	-11
pair paper towel	10
pair pattern over	-9
pair peg rail	-9
pair picked one	11
pair picked up	-31
pair piece for	-6
pair piece of	6
pair pipe is	-19
pair place had	-5
pair place on	-9
pair planed nae	-6
pair planks are	7
pair plate one	11
pair ply at	13
pair pocket door	-16
pair point hanging	-6
pair pole motor	5
pair poles over	9
pair post is	-19
pair pulled the	-6
pair push that	-5
pair put a	-12
pair put in	5
pair put it	-6
pair put the	-11
pair quiet as	6
pair r h	-9
pair rail got	-13
pair rail on	-5
pair rail post	-14
pair rail she	5
pair rang the	8
pair rehung shuts	7
pair required from	12
pair reset it	13
pair restroom drain	17
pair right side	-9
pair roll up	7
pair rolling good	14
pair roofer is	-8
pair room door	8
pair room please	5
pair sandbox lid	11
pair sashes run	-12
pair says forget	22
pair says its	9
pair says leave	19
pair says never	18
pair says the	6
pair screen door	8
pair screw em	-8
pair screwed a	-15
pair screws at	-5
pair screws i	-12
pair screws in	14
pair sealed roond	19
pair second coat	-15
pair she bought	8
pair she says	9
pair she wants	-8
pair she'd like	-11
pair shower 2	-16
pair shower arm	8
pair shut the	-11
pair shuts proper	11
pair shuts with	9
pair side door	8
pair sign i	-7
pair since i	6
pair six is	14
pair skip it	5
pair sleeve anchors	22
pair solid as	-7
pair solid now	-5
pair spin room	9
pair stain block	10
pair stocks it	-7
pair stopped at	-9
pair store had	-13
pair strip in	-9
pair stuck back	10
pair stuck down	8
pair supply line	-8
pair swapped it	-8
pair swim ladder's	-9
pair swings free	7
pair tell the	10
pair texted gus	9
pair thank god	16
pair that bracket	-9
pair that closet	18
pair that comes	-7
pair that door	-12
pair that flashing	-6
pair that hole	-15
pair that hose	7
pair that one	-36
pair that one's	27
pair that rail	-8
pair that room	5
pair that wall	-9
pair that's off	8
pair that's why	-8
pair the 2	-9
pair the ac	-8
pair the ballast	-10
pair the basement	19
pair the bedroom's	9
pair the bell	-6
pair the board	-8
pair the bottom	-8
pair the box	-22
pair the bulb	8
pair the cap	-5
pair the cartridge	13
pair the check	23
pair the chimney	5
pair the chute	17
pair the cistern	-7
pair the closer	9
pair the closet	23
pair the co	-9
pair the cord	-8
pair the day	7
pair the dimmer	13
pair the dining	-12
pair the door	9
pair the door's	-6
pair the double	12
pair the drain	-8
pair the dumpster	11
pair the end	11
pair the entry	8
pair the fan	-6
pair the fire	17
pair the fist	11
pair the floor	-21
pair the flour	5
pair the foam	-7
pair the front	-7
pair the garage	6
pair the grate	9
pair the grille	-6
pair the hand	5
pair the hank	5
pair the henhouse	9
pair the hinge	-15
pair the house	-11
pair the inside	-8
pair the joist	-5
pair the kit	13
pair the kitchen	-5
pair the ladder	26
pair the lamp	7
pair the landlord	-9
pair the last	-5
pair the latch	-35
pair the laundry	9
pair the left	-10
pair the light	-8
pair the lock	-6
pair the mail	6
pair the mirror	-8
pair the mouse	-11
pair the newel	14
pair the next	21
pair the north	-6
pair the other	-21
pair the outlet	-12
pair the painter	15
pair the panel	-6
pair the pantry	7
pair the parlor	14
pair the patch	-15
pair the pharmacy	-9
pair the plate	26
pair the porch	-7
pair the post	-8
pair the putty	-9
pair the rail	15
pair the reel	-10
pair the rod	6
pair the roll	-7
pair the roof	-6
pair the same	8
pair the sash	17
pair the screws	-6
pair the second	-7
pair the shelf	-6
pair the shelves	-10
pair the shop	11
pair the side	30
pair the siding	8
pair the six	-11
pair the slides	8
pair the spring	32
pair the stairs	-5
pair the step	13
pair the stop	-8
pair the stove	27
pair the street	9
pair the supply	-10
pair the sweep	5
pair the switch	-12
pair the table	13
pair the tack	5
pair the tap	13
pair the three	8
pair the tile	-15
pair the tin	9
pair the toilet	9
pair the top	19
pair the track	-9
pair the truck	-11
pair the twenty	9
pair the two	34
pair the usb	6
pair the valve	-10
pair the van	-26
pair the wall	-8
pair the washer	-5
pair the water	11
pair the watter	22
pair the way	15
pair the white	6
pair the whole	-15
pair the yard	-10
pair them closet	14
pair there was	7
pair there with	6
pair there's a	-13
pair they don't	11
pair they had	-23
pair they only	-7
pair they were	-10
pair thing is	24
pair thirty one	15
pair this time	-9
pair three by	9
pair three is	-21
pair through it	-13
pair through the	-5
pair tight now	5
pair tile discontinued	-5
pair tile pattern	-9
pair tiles are	-6
pair tiles by	-6
pair to a	-9
pair to buy	-9
pair to friday	-13
pair to go	-8
pair to monday	-6
pair to that	11
pair to the	20
pair toe kick	-8
pair toilet seat	6
pair too far	9
pair took care	6
pair took it	-7
pair took the	8
pair towel thing	10
pair track online	-9
pair trim off	-6
pair tub of	11
pair tube of	-5
pair tuesday now	-6
pair turned the	12
pair twenty four	-6
pair twenty one	13
pair twenty two	-16
pair two clamps	-14
pair two coats	7
pair two foot	-5
pair two i	14
pair two inches	7
pair two is	18
pair two more	-8
pair two new	13
pair two of	-24
pair two screws	24
pair two the	-9
pair uh the	5
pair under nettie's	8
pair under the	-6
pair unit two	8
pair up by	9
pair up in	20
pair up like	-12
pair up now	6
pair up on	-15
pair up over	10
pair up the	-10
pair usb number	9
pair ut it	-10
pair ut it's	-6
pair ut no	-8
pair vacuum breaker	-8
pair valve is	-11
pair wad in	17
pair waits on	-14
pair wall is	-5
pair wall where	11
pair want the	12
pair wants a	-14
pair wants the	-11
pair was a	14
pair was got	11
pair was just	26
pair was only	11
pair was the	14
pair washer box	-5
pair washer is	7
pair water board	10
pair we'll dae	-6
pair went in	6
pair went to	-10
pair were out	-8
pair when the	-5
pair when they	-5
pair while i	6
pair whistle in	14
pair window corded	-9
pair window in	7
pair wire nut	20
pair with a	12
pair with his	15
pair with me	13
pair with one	-7
pair with that	21
pair with the	17
pair won't hold	-10
pair would like	-7
pair you can't	25
pair you cant	-9
pair you'd never	7
part all	-9
part all rank first	17
part all rank sole	-39
part all rank tie	6
part all read flaw	13
part all read none	-18
part few rank first	-30
part few rank later	-42
part few rank near	24
part few rank sole	15
part few rank tie	27
part few read done	10
part few read done+fixed	-46
part few read done+flaw	-18
part few read done+goods	5
part few read done+plan	-7
part few read fixed	24
part few read flaw	11
part few read flaw+plan	-7
part few read none	29
part few read plan	-9
part most	26
part most rank sole	19
part most read done	15
part most read done+flaw	7
part most read flaw	-19
part most read none	-22
part most read plan	30
part none	-45
part none rank later	13
part none rank near	-27
part none rank sole	6
part none rank tie	-37
part none read done	-6
part none read done+fixed	57
part none read done+flaw	6
part none read flaw	7
part none read flaw+goods	-11
part none read flaw+goods+plan	12
part none read goods	-27
part none read none	-29
part none read plan	-53
part some	17
part some rank first	20
part some rank later	-7
part some rank sole	12
part some rank tie	-9
part some read done	8
part some read done+flaw	-6
part some read fixed	11
part some read flaw	-29
part some read flaw+goods	5
part some read flaw+plan	-6
part some read goods	-19
part some read none	39
put false false	5
put false true	-77
put true false	58
put true true	-8
rank first head before	-20
rank first head no	9
rank first head own	7
rank first read done	10
rank first read done+flaw	9
rank first read done+plan	-12
rank first read fixed	18
rank first read flaw+goods	7
rank first read goods	-13
rank first read plan	-25
rank later	-37
rank later head no	-16
rank later head own	-21
rank later read done	-14
rank later read done+fixed	6
rank later read done+flaw	-7
rank later read flaw	10
rank later read goods	-7
rank later read none	6
rank later read plan	-12
rank near	13
rank near head named	25
rank near head no	-16
rank near head own	8
rank near read done	14
rank near read done+plan	-7
rank near read fixed	15
rank near read flaw	-11
rank near read none	-7
rank near read plan	-6
rank sole	19
rank sole head before	9
rank sole head own	13
rank sole read done	7
rank sole read done+fixed	26
rank sole read done+flaw	-21
rank sole read done+plan	16
rank sole read flaw	30
rank sole read flaw+goods	-11
rank sole read flaw+goods+plan	12
rank sole read flaw+plan	-13
rank sole read goods	-15
rank sole read goods+plan	-8
rank sole read plan	-24
rank tie	-12
rank tie head before	15
rank tie head named	-9
rank tie head own	-19
rank tie read done	11
rank tie read done+fixed	-14
rank tie read flaw	-47
rank tie read goods	-10
rank tie read plan	28
rarest 1	28
rarest 1 read done head no	15
rarest 1 read done+fixed head own	39
rarest 1 read done+flaw head no	24
rarest 1 read done+flaw head own	5
rarest 1 read done+goods head no	-6
rarest 1 read done+plan head no	-6
rarest 1 read fixed head no	10
rarest 1 read flaw head before	11
rarest 1 read flaw head own	13
rarest 1 read goods head before	7
rarest 1 read goods head no	-27
rarest 1 read none head no	7
rarest 1 read none head own	8
rarest 1 read plan head before	-8
rarest 1 read plan head no	-15
rarest 1 read plan head own	-42
rarest 2 read done head own	-20
rarest 2 read done+fixed head no	-18
rarest 2 read done+flaw head no	-23
rarest 2 read done+flaw head own	-16
rarest 2 read done+plan head no	-6
rarest 2 read fixed head no	18
rarest 2 read fixed head own	9
rarest 2 read flaw head no	13
rarest 2 read flaw head own	11
rarest 2 read flaw+plan head no	-6
rarest 2 read goods head no	-12
rarest 2 read goods head own	9
rarest 2 read none head before	8
rarest 2 read none head no	11
rarest 2 read none head own	-25
rarest 2 read plan head before	-14
rarest 2 read plan head no	25
rarest 2 read plan head own	31
rarest 3 read done head own	20
rarest 3 read done+plan head own	6
rarest 3 read fixed head no	11
rarest 3 read flaw head no	-7
rarest 3 read flaw head own	-19
rarest 3 read flaw+plan head no	-5
rarest 3 read plan head no	-11
rarest 3 read plan head own	8
rarest 4	-37
rarest 4 read done head before	21
rarest 4 read done head named	5
rarest 4 read done head no	-15
rarest 4 read done+fixed head no	-12
rarest 4 read done+flaw head named	-18
rarest 4 read done+plan head no	9
rarest 4 read fixed head before	11
rarest 4 read fixed head no	-9
rarest 4 read flaw head own	-27
rarest 4 read goods head before	-17
rarest 4 read none head before	9
rarest 4 read none head own	-7
rarest 4 read plan head before	-13
read done flaw	16
read done work	13
read done+fixed flaw	14
read done+fixed+plan flaw	14
read done+flaw flaw	11
read done+flaw work	-22
read done+plan flaw	-14
read done+plan work	9
read fixed flaw	57
read fixed work	-20
read fixed+plan flaw	10
read flaw work	-16
read flaw+goods flaw	-7
read flaw+plan flaw	-19
read goods flaw	-29
read goods work	-22
read goods+plan flaw	-9
read none flaw	-5
read none work	13
read plan flaw	-33
read plan work	-5
size long	-26
size middle	8
strange 0 all	-10
strange 0 few	15
strange 0 most	7
strange 0 none	30
strange 0 some	10
strange 1 all	-7
strange 1 few	24
strange 1 none	27
strange 1 some	38
strange 2 all	22
strange 2 few	9
strange 2 most	-31
strange 2 none	-14
strange 2 some	10
strange 3 all	-8
strange 3 few	-32
strange 3 most	18
strange 3 none	-22
strange 3 some	6
strange 4 all	-6
strange 4 few	-19
strange 4 most	35
strange 4 none	-64
strange 4 some	-46
waiting	-33
well false false	-16
well false true	-85
well true false	75
word 1	-56
word 10	-23
word 12	-9
word 14	-6
word 15	-11
word 16	6
word 2	-22
word 2nd	-5
word 30	-9
word 36	-9
word 5	-26
word 6	-17
word 8	17
word 9	12
word a	43
word about	21
word ac	-8
word add	-8
word after	25
word again	-57
word against	10
word ain't	-6
word aint	-9
word air	-8
word alone	6
word along	21
word already	23
word also	-21
word an	-16
word answer	9
word any	-11
word anyhow	12
word anything	7
word anyway	-9
word anywhere	29
word apart	-10
word apt	-15
word are	13
word around	-22
word arrive	30
word as	35
word asked	-15
word at	-33
word ause	-14
word baby	-5
word back	-8
word backed	-10
word bad	-22
word bag	-7
word bags	-9
word ballast	-6
word bangs	17
word bar	-8
word base	-16
word basement	9
word bathroom	-9
word battery	-10
word be	-22
word bead	-9
word been	-18
word behind	24
word bell	-13
word below	-10
word bench	-6
word bend	-6
word bent	6
word blade	13
word block	-10
word blocking	9
word bloke	11
word board	10
word boards	-10
word boat	-6
word bolt	21
word bolts	-11
word bone	8
word boot	8
word both	49
word bought	15
word box	5
word bracket	-24
word brackets	-10
word brass	-27
word breaker	-25
word broke	-12
word bucket	-11
word butter	7
word buy	-22
word by	-14
word cabinet	-6
word cable	14
word called	-46
word cam	12
word came	31
word can	-7
word can't	15
word cap	-10
word care	6
word carpet	-5
word caulked	-8
word ceiling	-11
word cement	-8
word chain	9
word chair	-10
word change	5
word changed	8
word changing	7
word check	-6
word chirping	-5
word chrome	-5
word chute	8
word clamp	8
word clean	-15
word cleaned	19
word clears	13
word closed	-6
word closer	-6
word closet	20
word closing	7
word co	-9
word coat	-21
word coffee	14
word cold	-9
word color	-11
word come	32
word comes	-14
word company	-6
word complete	18
word cooked	10
word cord	-7
word count	-5
word counted	-8
word counter	-6
word cover	10
word covers	-5
word cracked	-15
word cross	19
word cut	-8
word d	-10
word dae	-7
word damp	-16
word day	9
word dead	-19
word deck	-12
word did	46
word discontinued	-5
word do	-21
word dock	7
word does	-5
word doesn't	16
word doesnt	17
word dog	14
word don't	14
word dont	-13
word door	13
word door's	-6
word double	-9
word dover	-9
word down	28
word downstairs	12
word drags	-8
word drain	-10
word drap	25
word drawer	-23
word dried	-18
word drip	-17
word driver	-6
word drop	8
word dropped	21
word dry	41
word drywall	-8
word dumpster	11
word each	7
word edge	-19
word efter	-6
word eight	-6
word eighteen	-12
word eighths	13
word eighty	-5
word either	-14
word eleven	13
word em	7
word end	-12
word ends	-7
word even	-6
word every	-6
word everything	10
word extension	9
word extra	-9
word eye	12
word fan	-8
word far	8
word faucet	-7
word feed	-5
word feet	-7
word fifteen	9
word fifty	-6
word fill	-8
word filled	23
word filter	9
word finally	9
word find	9
word fine	-19
word finger	-7
word finish	14
word finished	-25
word fire	28
word first	16
word five	-16
word flange	6
word flat	16
word flight's	10
word float	-7
word foam	-8
word foot	-29
word footer	-6
word for	-65
word forget	36
word forgot	-7
word forty	6
word found	6
word four	-26
word free	19
word friday	-32
word from	-18
word front	-31
word front's	7
word full	9
word gal	-9
word gareth	6
word gasket	-5
word gave	-11
word get	-11
word gets	-10
word getting	-6
word gfci	7
word glass	-12
word glides	-5
word glue	-5
word glued	10
word go	-20
word god	16
word goes	27
word going	52
word gone	9
word gonna	7
word good	58
word got	-23
word gotta	-11
word grab	-5
word grabbed	8
word grandson	7
word grate	-5
word grease	33
word grey	12
word grille	-6
word grout	-7
word gus	7
word gutter	-9
word guy	-8
word guys	16
word had	15
word half	12
word hand	-16
word handle	-37
word handrail	-10
word hanging	23
word hangs	-10
word happy	8
word hard	14
word hardware	-8
word has	-15
word hauling	7
word have	-14
word he'll	6
word he's	23
word head	15
word hear	30
word heat	-15
word heater	7
word held	14
word hen	-24
word henhouse	9
word her	28
word here	-20
word himself	-13
word hinge	-29
word hinges	-25
word history	9
word hit	-12
word hold	-8
word home	-15
word hook	-8
word hooked	11
word hose	29
word house	-11
word how	12
word hundred	-12
word hung	-24
word i	-21
word i'll	-8
word i'm	-15
word i've	-12
word ill	-5
word inch	-34
word insulated	-6
word insulation	6
word into	-19
word iron	-7
word is	-26
word isn't	15
word isnt	-6
word it	46
word it's	-7
word its	9
word itself	10
word jumped	-9
word just	-22
word keep	-9
word kicked	15
word kind	-21
word kit	-30
word kitchen	-21
word know	9
word label	11
word ladder	22
word lady	6
word landing	8
word landlord	9
word landlord's	21
word last	-12
word latch	-12
word leave	14
word left	-8
word leg	8
word length	-5
word level	11
word lid	9
word light	-27
word like	53
word line	-12
word list	-9
word listen	12
word lit	18
word little	-16
word locks	13
word longer	-12
word look	-6
word looked	-8
word looking	-8
word loose	35
word lovely	-5
word low	-6
word lumber	-8
word machine	5
word man	9
word maple	-7
word marine	-8
word maybe	7
word meant	7
word meanwhile	11
word mill	-6
word miller's	-5
word min	16
word mind	8
word minute	9
word minutes	6
word monday	-10
word more	7
word motor	-16
word moves	-11
word moving	-8
word mrs	-10
word must	-11
word my	32
word myself	27
word n	6
word nae	-6
word need	-30
word nettie's	17
word never	20
word new	-6
word newel	10
word next	11
word nice	21
word nine	-7
word nineteen	-12
word ninety	-5
word nipped	-14
word no	49
word nobody	-12
word noon	-6
word not	-7
word nothin	17
word nothing	30
word now	85
word nursery	15
word nut	12
word o	-27
word oak	-7
word of	-23
word off	46
word oh	14
word oiled	-17
word ok	6
word okay	24
word old	-31
word on	23
word one's	6
word only	-27
word op	8
word open	12
word or	-13
word order	-12
word ordered	-24
word other	-12
word ought	13
word our	-12
word out	-14
word outlet	-17
word outside	-7
word outta	32
word over	9
word overnight	-10
word owner	15
word pail	-12
word paint	-10
word painted	5
word painter	15
word painting	-6
word pan	-8
word panel	7
word panes	-11
word pantry	8
word paper	6
word part	-6
word past	29
word patch	-7
word pattern	-7
word pau	9
word peg	-8
word pergola	-5
word photocell	-12
word picked	-19
word piece	23
word pieces	10
word pine	-10
word place	-20
word plane	6
word planed	-17
word plate	13
word plugged	-15
word plum	12
word plus	30
word point	-14
word post	-13
word poured	-9
word pressure	11
word pretty	15
word primed	7
word pull	-10
word pump	-5
word push	-9
word putting	6
word putty	-9
word quarter	-6
word quit	21
word r	-11
word rail	-33
word rain	-6
word rained	-6
word ran	41
word rang	8
word range	-7
word reads	8
word ready	12
word red	7
word regulator	15
word rehung	15
word replace	-6
word required	11
word reset	22
word rest	26
word restroom	8
word right	27
word ripped	-8
word rm	-9
word rocking	9
word rod	-18
word roll	-6
word rolled	8
word rollers	-12
word rolling	14
word roof	-6
word roofer	-8
word room's	-14
word roond	19
word run	-9
word running	5
word rusted	-8
word s	-16
word said	-7
word sand	8
word sanded	21
word sanding	9
word sash	11
word sat	8
word saw	-11
word says	37
word scratch	9
word screen	-19
word screw	10
word screwed	7
word screws	15
word seal	-10
word sealed	8
word seam	-5
word seat	-10
word second	-12
word see	11
word seized	-8
word set	-6
word setting	8
word seven	6
word she	-16
word she'd	-11
word she's	46
word sheets	10
word shelf	-24
word shop	-14
word short	16
word should	8
word showed	-15
word shower	-18
word shut	-9
word shuts	22
word side	28
word sides	14
word sign	-7
word sign's	-9
word sister	-9
word sits	13
word sitting	-12
word six	18
word size	-5
word skip	21
word slats	-7
word smoke	-6
word soaked	-5
word some	-7
word somebody	7
word sound	-6
word spare	-12
word special	-7
word split	-24
word spout	-6
word spring	6
word square	-6
word squeak	6
word squirrel	8
word stain	-15
word stairs	-6
word stall	-10
word start	-5
word steady	12
word steps	8
word still	-23
word stock	-11
word stocks	-10
word stop	-13
word stopped	-5
word store	-28
word stove	7
word straight	29
word street	-6
word stringer	-7
word strip	-16
word stripped	-18
word stuck	36
word stuff	15
word suite	15
word summer	-6
word supply	-23
word swapped	9
word sweating	-7
word sweep	-15
word swings	8
word switch	-24
word t	-6
word table	-6
word take	6
word takes	-20
word tannie	15
word tap	-11
word tape	5
word taped	19
word tell	9
word ten	-22
word tested	24
word texted	7
word than	11
word thank	12
word that	-8
word thats	-13
word the	-26
word their	-7
word them	11
word there's	-19
word theres	-8
word they	-40
word they'd	-8
word they're	15
word theyre	7
word thing	39
word third	8
word thirty	24
word this	-13
word those	20
word thought	22
word thread	7
word three	-28
word through	-23
word thru	22
word thursday	-12
word ticket	-5
word tight	35
word tightened	12
word tiles	-8
word till	-12
word time	-10
word times	-6
word tin	6
word to	-19
word toggles	10
word toilet	-13
word told	-7
word tomorrow	-17
word too	10
word took	9
word top	11
word towel	-6
word town	-7
word track	-8
word trap	11
word trim	-12
word tripped	15
word tube	28
word tuesday	-18
word turn	22
word turned	25
word turns	17
word twelve	-11
word twice	-12
word two	8
word two's	6
word uh	14
word um	-7
word under	-16
word underneath	-5
word unit	-14
word until	-6
word up	28
word upper	-6
word upstairs	34
word us	25
word used	7
word ut	-41
word vacuum	-7
word valve	-24
word valves	-13
word van	-6
word vent	-15
word volts	14
word w	-8
word waits	-15
word wall	-12
word walls	-16
word want	-9
word wants	-24
word warm	-6
word washer	-10
word water	14
word watter	22
word wax	-7
word way	46
word we	-45
word we'll	-6
word we're	14
word wednesday	-16
word week	-6
word weeping	-6
word well	53
word went	-10
word were	-11
word wet	-13
word what	-6
word when	-21
word where	8
word while	-9
word white	-12
word whole	-12
word why	-9
word window	-12
word wire	21
word with	30
word wont	-6
word wood	-17
word worn	-17
word x	-18
word ya	17
word yard	-12
word yeah	6
word year	11
word yes	-12
word yesterday	15
word yet	-25
word you	8
word you'd	7
word your	14
work	-14
`;
