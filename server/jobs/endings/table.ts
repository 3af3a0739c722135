/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-10
after - -	-10
after are	28
after at	20
after at the	25
after back	10
after back up	7
after bought	-20
after bought -	-27
after called	-12
after came	6
after came -	7
after cap	-12
after clears all	-6
after come	34
after cut	16
after doesn't	14
after doesn't bang	9
after down	8
after goes	8
after had	7
after had a	12
after handle	-13
after has	14
after has a	15
after here	-10
after i	-10
after i found	-6
after in	12
after is	22
after is a	-11
after is insulated	-6
after is the	-8
after it	-13
after it's	-13
after its	-12
after just	-13
after kit	-8
after need	-7
after next	-7
after no	-6
after not	-6
after off	39
after on -	7
after only	-7
after out	10
after out of	10
after pattern	-8
after pattern over	-8
after planed	-6
after planed nae	-6
after reads	-7
after she	20
after stop	-8
after strip	-16
after strip -	-16
after the	-27
after tight	13
after tight -	8
after to	-8
after up	7
after was	6
ahead -	33
ahead 2	-5
ahead a	24
ahead back	-24
ahead brass	-5
ahead closet	27
ahead deck	-13
ahead fire	-5
ahead floor	-8
ahead front	-15
ahead got	14
ahead kitchen	-5
ahead mail	6
ahead nd	-19
ahead new	31
ahead nine	-6
ahead of	-14
ahead one	-15
ahead pantry	14
ahead pocket	-12
ahead porch	-14
ahead room	18
ahead side	-7
ahead that	-23
ahead the	25
ahead them	18
ahead those	8
ahead toilet	-10
ahead window	11
ails false denies false read done	8
ails false denies false read done+flaw	12
ails false denies false read done+goods	6
ails false denies false read done+plan	-14
ails false denies false read fixed	-20
ails false denies false read fixed+plan	11
ails false denies false read flaw	15
ails false denies false read flaw+goods	-10
ails false denies false read flaw+plan	-7
ails false denies false read goods	-32
ails false denies false read goods+plan	-6
ails false denies false read none	16
ails false denies false read plan	-30
ails false denies true read done	10
ails false denies true read done+fixed	16
ails false denies true read fixed	15
ails false denies true read flaw	-10
ails false denies true read flaw+plan	-5
ails false denies true read none	-21
ails false denies true read plan	6
ails true denies false read done	-18
ails true denies false read done+fixed	9
ails true denies false read done+flaw	-12
ails true denies false read fixed	74
ails true denies false read flaw	-12
ails true denies false read flaw+goods	-5
ails true denies false read plan	-8
ails true denies true read done	20
ails true denies true read flaw	13
ails true denies true read plan	-8
any	-11
asked false	-10
before 0	-32
before 1	17
before 2	18
cure back denies false	-10
cure back denies true	-23
cure bent denies false	14
cure block denies false	22
cure bolt denies false	-7
cure bon denies false	-6
cure budg denies true	25
cure burn denies false	8
cure butter denies false	8
cure catch denies false	18
cure clear denies false	24
cure clo denies false	-10
cure coat denies false	-15
cure cut denies false	-43
cure dead denies false	-13
cure down denies false	8
cure drag denies false	-7
cure drain denies false	10
cure dry denies false	26
cure epoxy denies false	-9
cure faucet denies false	13
cure fill denies false	9
cure fre denies false	5
cure grab denies false	-5
cure heat denies false	11
cure hol denies false	-9
cure hot denies false	29
cure in denies false	-39
cure in denies true	-45
cure leak denies false	-21
cure leak denies true	13
cure lean denies false	-7
cure light denies false	-24
cure lock denies false	11
cure mud denies false	12
cure on denies false	-25
cure on denies true	-14
cure piec denies false	9
cure quit denies true	13
cure replac denies false	-20
cure rod denies true	8
cure roll denies false	-21
cure run denies false	27
cure screw denies false	9
cure seal denies false	-17
cure shutof denies true	-8
cure slid denies false	-8
cure solid denies false	10
cure stay denies false	-14
cure steady denies false	9
cure sweat denies true	-11
cure swing denies false	17
cure swing denies true	-11
cure trip denies false	19
cure trip denies true	20
cure turn denies false	27
cure whit denies false	-9
cure wood denies false	-15
cured false ails false denies false	-24
cured false ails false denies true	-27
cured false ails true denies false	7
cured false ails true denies true	-8
cured false head before denies false	-8
cured false head before denies true	-15
cured false head named denies false	31
cured false head no denies false	-23
cured false head no denies true	-5
cured false head own denies false	-20
cured false head own denies true	-28
cured false read done	22
cured false read done+fixed	18
cured false read done+flaw	-18
cured false read done+plan	-12
cured false read fixed	48
cured false read flaw	-7
cured false read flaw+goods	-11
cured false read flaw+plan	-9
cured false read goods	-41
cured false read none	-25
cured false read plan	-21
cured true ails false denies false	-6
cured true ails false denies true	19
cured true ails true denies false	16
cured true ails true denies true	32
cured true head before denies true	12
cured true head named denies false	12
cured true head no denies false	-20
cured true head no denies true	18
cured true head own denies false	19
cured true head own denies true	24
cured true read done+flaw	25
cured true read done+plan	-5
cured true read fixed	15
cured true read flaw	10
cured true read flaw+plan	-8
cured true read none	24
cured true read plan	-19
cures 0 true	-49
cures 1 true	14
cures 2 true	39
days few	9
days many	-49
days none	23
due false	-33
due true	36
end 1	-14
end 2	8
end 20	-17
end 2x4	-7
end 4	7
end 8	22
end adhesive	-13
end again	-15
end all	34
end already	19
end anyhow	12
end anyway	-7
end anywhere	8
end arm	-12
end arrive	30
end back	23
end bag	-7
end bang	20
end bangs	15
end bar	-8
end battery	-9
end black	-7
end blades	-11
end board	16
end boards	-14
end bolt	-13
end both	13
end bought	28
end box	22
end br	16
end brackets	-19
end breaker	-25
end butter	18
end buy	-9
end called	-9
end came	17
end can	14
end cap	-7
end cartridge	10
end cement	-18
end changed	19
end chimney	6
end cleaned	11
end close	13
end closer	-7
end closet	13
end coat	13
end coats	13
end come	38
end cord	-7
end corded	-14
end corner	-6
end counter	-19
end cracked	-12
end day	8
end dead	-8
end deep	8
end dimmer	14
end discontinued	-7
end do	-5
end door	6
end dover	-8
end down	-15
end drap	25
end drawer	-7
end dripping	10
end drips	-13
end dry	36
end either	-12
end elbow	-6
end fan	-6
end far	9
end feet	-8
end fifteen	6
end filled	-13
end finally	-13
end fine	-5
end finger	-10
end finished	-19
end first	9
end five	-13
end flat	8
end foam	-5
end foot	-19
end footer	-7
end four	-6
end free	11
end friday	-15
end ft	-13
end gal	-6
end go	-15
end god	16
end gone	-12
end good	21
end grate	13
end hall	5
end hand	-25
end here	10
end him	13
end hinges	-7
end history	9
end hold	-10
end hole	-11
end holes	-10
end home	-12
end hook	-5
end hot	35
end hundred	-9
end in	25
end inch	-19
end inches	-7
end insulated	-6
end is	12
end it	28
end itself	9
end kind	-12
end ladder	28
end latch	-26
end length	-5
end level	12
end light	-13
end lights	-9
end lock	-26
end loose	26
end lunch	15
end me	-8
end mind	-6
end monday	-17
end morning	-5
end motor	-6
end moving	-7
end mud	10
end new	19
end next	-9
end nice	8
end night	-6
end no	-10
end noon	-11
end nothing	5
end now	28
end on	27
end one	-9
end ones	-12
end online	-9
end only	-12
end op	-6
end open	15
end ordered	-11
end out	-23
end outside	-6
end over	-6
end overnight	-13
end paint	-6
end pair	-6
end pieces	16
end pipe	-8
end please	5
end post	-6
end pretty	11
end quit	7
end rattles	-6
end ready	12
end ring	-7
end rm	12
end rock	8
end room	13
end roond	19
end round	-6
end run	-11
end sanded	29
end scraped	-6
end screw	13
end sealed	9
end set	-10
end seven	-5
end shelf	11
end shelves	13
end side	18
end siding	8
end slider	-6
end snapped	-16
end soldered	-8
end spare	-12
end spring	-5
end squirrel	12
end stock	-7
end stop	-10
end store	-9
end straight	22
end strip	-6
end stripped	-20
end summer	-8
end swapped	19
end switch	-12
end table	7
end tap	14
end taped	20
end tested	25
end them	-6
end there	9
end thing	22
end those	-9
end thread	7
end three	-11
end tight	26
end tile	-6
end tiles	15
end time	-6
end tin	10
end to	6
end today	-6
end tomorrow	-11
end too	-7
end top	23
end town	-10
end trip	11
end truck	-10
end tube	33
end tuesday	-11
end twelve	-7
end twice	-6
end two	-17
end us	16
end valve	6
end valves	-6
end van	-11
end wall	-27
end water	-6
end watter	22
end way	23
end wednesday	-13
end white	-14
end wood	-15
end yes	-10
end yet	-10
first 1	-11
first 2	-22
first 4	-7
first 5	-11
first also	-17
first ause	-18
first back	-7
first base	12
first bath	26
first bedroom	-6
first behind	14
first bench	31
first blind	8
first board	8
first boards	12
first boot	9
first both	5
first bottom	13
first bought	-9
first box	9
first breaker	-10
first cabinet	6
first called	11
first carpet	-10
first cartridge	6
first chapel	-6
first clamps	16
first cleaned	20
first closer	-13
first closer's	-8
first corner	-16
first cut	12
first did	13
first doctor	-6
first door	5
first dryer	13
first ecause	-6
first edge	-10
first fan	14
first filled	26
first filter	29
first first	-11
first fished	11
first five	-6
first flag	6
first floor	-10
first found	14
first from	-6
first front	8
first garage	-6
first gate	12
first gets	7
first gfci	15
first glass	-7
first goes	-16
first got	-40
first gutter	-9
first handrail	28
first he	-6
first he's	16
first hen	-24
first here	-5
first hinges	37
first hood	-18
first i	-60
first i've	-8
first is	14
first its	-32
first kitchen	-15
first landlord	-8
first landlord's	22
first last	-19
first latch	20
first left	22
first light	14
first lock	11
first make	-6
first me	-8
first mine	-7
first mirror	-18
first moved	-8
first nd	-6
first new	-5
first nine	-8
first no	-34
first nothing	17
first now	-6
first nursery	10
first o	-25
first okay	8
first old	-13
first once	-5
first one	-29
first op	6
first ordered	-5
first ours	-16
first outlet	15
first oven	-13
first owner	7
first picked	-19
first pipe	-14
first pocket	-17
first pole	25
first poles	9
first post	-14
first pulled	12
first put	-8
first r	-14
first rail	-26
first rained	-10
first ran	24
first replace	-5
first restroom	12
first right	11
first sandbox	10
first saturday	13
first screens	13
first she	-27
first she's	19
first shelf	-10
first sink	11
first six	16
first smoke	24
first stall	-6
first still	-6
first stopped	-17
first store	6
first swim	-10
first tape	-8
first texted	12
first that	27
first that's	-20
first the	-8
first them	10
first there's	-16
first they	-12
first they're	-11
first those	8
first three	-8
first threshold	16
first tiles	-14
first toilet	-6
first told	-9
first took	-7
first tread	19
first turned	9
first two	-16
first u11	-8
first uh	6
first ut	-50
first wall	10
first wants	-10
first washer	-6
first we	-17
first your	21
flaw	-8
flaw gone	9
flaw said false	8
flaw said true	11
head before	-13
head before read done	16
head before read done+fixed	14
head before read fixed	10
head before read flaw	13
head before read flaw+goods	-8
head before read goods	-18
head before read none	14
head before read plan	-46
head named	33
head named read done	15
head no	-27
head no read done	5
head no read done+fixed	-21
head no read done+flaw	-7
head no read done+goods	-7
head no read fixed	28
head no read fixed+plan	12
head no read flaw+goods	-7
head no read flaw+goods+plan	12
head no read flaw+plan	-14
head no read goods	-45
head no read goods+plan	-6
head no read none	15
head no read plan	-9
head own read done	6
head own read done+fixed	25
head own read done+flaw	-11
head own read done+plan	9
head own read flaw	-30
head own read flaw+goods	5
head own read none	-15
met false	32
met true	-81
named 0 head before	-13
named 0 head no	-103
named 0 head own	-16
named 1 head named	19
named 1 head no	30
named 1 head own	33
named 2 head named	15
named 2 head no	70
named 2 head own	-13
open	10
own 0	-18
own 0 read done	17
own 0 read done+fixed	12
own 0 read done+flaw	-19
own 0 read done+plan	15
own 0 read fixed	11
own 0 read flaw+goods	-5
own 0 read goods	-23
own 0 read none	-15
own 0 read plan	-24
own 1	-52
own 1 read done	10
own 1 read done+flaw	-16
own 1 read done+flaw+goods	10
own 1 read done+goods	-12
own 1 read fixed+plan	11
own 1 read flaw	-11
own 1 read flaw+goods	-8
own 1 read flaw+goods+plan	12
own 1 read flaw+plan	-13
own 1 read goods	-17
own 1 read goods+plan	-7
own 1 read plan	-30
own 2	29
own 2 read done+flaw	6
own 2 read done+plan	-11
own 2 read fixed	27
own 2 read flaw	5
own 2 read flaw+plan	-6
own 2 read goods	-19
own 2 read none	9
own 3	32
own 3 read done	11
own 3 read done+flaw	15
own 3 read flaw	-8
own 3 read goods	-6
own 3 read none	14
pair 1 in	-7
pair 12 ft	-12
pair 2 door	-6
pair 2 ft	-6
pair 3 8	8
pair 6 ft	-5
pair 8 in	6
pair 8 off	5
pair a bead	-7
pair a board	12
pair a crack	-5
pair a dead	-7
pair a door	-7
pair a drap	25
pair a fire	11
pair a gal	-6
pair a hole	10
pair a latch	-13
pair a leg	10
pair a new	-23
pair a piece	8
pair a plate	9
pair a rock	8
pair a screw	-16
pair a shelf	-6
pair a spare	-12
pair a squirrel	12
pair a truck	19
pair a wad	12
pair about 2	-6
pair about a	-6
pair about his	12
pair about the	26
pair ac guy	-7
pair after all	26
pair again right	-6
pair against the	10
pair all 2x4	-7
pair all day	-8
pair all four	7
pair all of	-13
pair all round	-6
pair all the	-9
pair all three	23
pair along the	-10
pair also got	-6
pair also the	-10
pair an inch	-6
pair anchor cement	-14
pair answer monday	12
pair are all	-8
pair are both	-6
pair are on	36
pair are rolling	15
pair are stripped	-9
pair are stuck	5
pair around the	-9
pair as a	9
pair as the	-7
pair at all	6
pair at four	-7
pair at home	-10
pair at it	-10
pair at that	-5
pair at the	-10
pair back door	-8
pair back from	-5
pair back in	14
pair back of	10
pair back on	-43
pair back room	-17
pair back to	-5
pair back up	10
pair ballast in	-11
pair base is	8
pair bay two	6
pair before the	13
pair behind furnace	13
pair behind it	-8
pair behind the	11
pair bell we'll	-6
pair bench is	17
pair big door	7
pair board about	10
pair board on	-6
pair board two	16
pair boards are	19
pair boards down	-6
pair both in	-7
pair both sashes	-11
pair both sides	14
pair both valves	-10
pair bought the	-12
pair bowl one	-7
pair box in	-13
pair box is	-6
pair box of	-8
pair bracket in	-20
pair bracket is	9
pair by eight	11
pair by itself	11
pair by six	-10
pair by the	-11
pair cabinet shop	-7
pair called the	-8
pair came in	-17
pair can't be	-9
pair can't see	15
pair caps on	-30
pair carpet tile	-7
pair cart is	9
pair ceiling tile	-11
pair chain on	-9
pair changing the	-6
pair chapel doors	-6
pair check for	11
pair check valve	27
pair chute door	15
pair cistern is	5
pair clears all	-6
pair closer arm	-22
pair closer came	5
pair closer's here	-8
pair closes it	15
pair closet door	9
pair closet doors	15
pair closet rod	7
pair co op	-8
pair coat of	-14
pair coat on	-12
pair coats of	7
pair come off	16
pair come up	-7
pair comes in	-9
pair corner is	-6
pair could the	-7
pair cut out	-8
pair da bathroom	6
pair dae efter	-6
pair damp about	-6
pair day door's	6
pair deck boards	-14
pair did the	21
pair dining room	12
pair doesn't bang	20
pair doesn't want	-6
pair doesnt want	18
pair don't get	12
pair don't have	-5
pair door 3	8
pair door closer	-14
pair door closes	15
pair door doesn't	20
pair door found	-9
pair door i	-12
pair door in	-9
pair door is	6
pair door stop	-8
pair door the	6
pair door trim	-8
pair door's back	-26
pair door's planed	-6
pair door's rehung	6
pair doors are	12
pair double check	11
pair double hook	-5
pair down to	25
pair drags on	-6
pair drain had	12
pair drawer the	-7
pair dried out	-6
pair drip is	-5
pair dry as	5
pair dry at	9
pair each meanwhile	10
pair edge is	5
pair efter the	-6
pair eight foot	-9
pair eighteen inch	-6
pair end cap	15
pair exam one	10
pair exam two	-6
pair fill valve	-14
pair find that	18
pair finger like	6
pair finish is	16
pair fire door	-8
pair first coat	-20
pair first job	6
pair first thing	23
pair fist was	10
pair five minutes	11
pair flag light	6
pair flat two	14
pair floor drain	-10
pair floor i	-9
pair floor reads	-10
pair for a	6
pair for flat	11
pair for now	-20
pair for that	-13
pair for the	8
pair forget the	20
pair found a	28
pair found at	6
pair found our	-8
pair found the	-15
pair fourteen by	-9
pair from a	11
pair from my	10
pair from our	12
pair from the	-32
pair front door	-10
pair ft along	-6
pair ft of	23
pair furnace is	13
pair garage door	-6
pair gave me	6
pair get a	8
pair get the	10
pair gets a	-11
pair gets replaced	-9
pair getting a	-9
pair gfci in	23
pair goes all	-15
pair goes in	-10
pair goes over	-6
pair goes up	41
pair going anywhere	33
pair going in	17
pair going to	17
pair good too	15
pair good while	-8
pair got 1	-6
pair got a	-17
pair got at	-6
pair got both	-10
pair got in	-6
pair got its	30
pair got the	-31
pair got two	8
pair gus the	12
pair gutter is	-9
pair guy came	-7
pair h window	-14
pair had a	15
pair had no	-12
pair had one	37
pair had to	-8
pair had was	-11
pair half inch	-5
pair half of	-6
pair half the	7
pair hand one	12
pair hand this	-8
pair handle tight	-5
pair hanging it	-6
pair has gone	9
pair has one	-7
pair have it	-9
pair have one	-6
pair have the	9
pair he says	31
pair he wants	8
pair he'll answer	12
pair heat tape	-5
pair henhouse now	9
pair here right	-8
pair hinges came	44
pair his mind	7
pair holes are	-11
pair holes in	5
pair hot water	5
pair hung on	-7
pair hung the	-10
pair i bent	19
pair i can	-10
pair i can't	-14
pair i cut	-21
pair i did	34
pair i found	-8
pair i gave	-6
pair i had	47
pair i hung	-14
pair i keep	-6
pair i left	-5
pair i looked	-7
pair i opened	12
pair i picked	10
pair i pulled	-11
pair i ran	-14
pair i screwed	-8
pair i stuck	26
pair i think	-7
pair i told	-10
pair i tried	5
pair i wanted	12
pair i was	6
pair im changing	-6
pair in a	-10
pair in already	-8
pair in at	-7
pair in back	-12
pair in bedroom	7
pair in behind	8
pair in dover	-8
pair in her	7
pair in his	8
pair in i	13
pair in it	38
pair in my	11
pair in now	-6
pair in on	-5
pair in stock	-7
pair in that	8
pair in three	-6
pair in too	18
pair in town	-8
pair in white	-9
pair in yet	-6
pair inside of	-8
pair into the	-6
pair is a	-15
pair is bent	-12
pair is close	27
pair is cut	8
pair is damp	-6
pair is done	-8
pair is finish	14
pair is gone	-18
pair is good	-23
pair is hanging	7
pair is history	9
pair is in	40
pair is insulated	-6
pair is off	-7
pair is old	-5
pair is open	-8
pair is solid	10
pair is straight	17
pair is stripped	-8
pair is the	-9
pair is tuesday	-7
pair is up	39
pair it again	-7
pair it ain't	-6
pair it bangs	15
pair it came	-20
pair it closes	-14
pair it for	-8
pair it four	-7
pair it gets	-13
pair it in	-5
pair it it's	-11
pair it like	11
pair it needs	13
pair it no	-8
pair it now	-15
pair it off	21
pair it on	25
pair it over	8
pair it the	-5
pair it till	-5
pair it twice	-13
pair it wants	-10
pair it was	7
pair it with	16
pair it'll be	-5
pair it's a	-11
pair it's just	-7
pair it's like	-16
pair it's meant	6
pair it's not	9
pair it's on	33
pair it's solid	-14
pair it's the	-26
pair it's up	10
pair its a	-9
pair its mud	10
pair its on	-18
pair its sitting	-14
pair its the	-13
pair its too	8
pair job of	6
pair kitchen faucet	-6
pair ladder bolt	-8
pair ladder's good	-10
pair last night	16
pair last three	-6
pair last two	-8
pair lateral 2	19
pair leave it	-9
pair leave the	23
pair left side	7
pair leg under	10
pair lid shuts	10
pair light over	-7
pair like butter	16
pair like it	14
pair like it's	6
pair like new	20
pair like the	-15
pair mail cart	6
pair make it	-7
pair make that	-6
pair meant to	6
pair meanwhile the	10
pair mens i	-7
pair mind on	7
pair mine are	-7
pair monday now	-6
pair monday when	-6
pair monday with	-5
pair more holes	5
pair more whistle	10
pair mouse hole	-6
pair moved it	-8
pair moved the	9
pair moves to	-10
pair mrs d	-9
pair must have	-7
pair my coat	19
pair nae point	-6
pair nd for	-8
pair nd four	-8
pair nd gets	-12
pair nd he	-12
pair nd i	-17
pair nd it	23
pair nd it's	-8
pair nd its	-14
pair nd my	7
pair nd no	26
pair nd one	-35
pair nd put	-20
pair nd screwed	-17
pair nd sealed	7
pair nd she	-8
pair nd she's	7
pair nd the	-23
pair nd there's	-10
pair nd theres	-7
pair nd three	7
pair nd took	24
pair nd two	-14
pair need one	-5
pair needs a	11
pair nettie's shelf	10
pair never know	18
pair never mind	15
pair new cord	11
pair new one	-11
pair new ones	-6
pair new tiles	10
pair next door	-6
pair no a	25
pair no drip	-10
pair no longer	-9
pair no more	15
pair no need	-7
pair no rattles	-6
pair no trip	13
pair nobody stocks	-12
pair not a	19
pair not done	-5
pair not going	14
pair not required	12
pair not the	-11
pair not three	-11
pair not two	-5
pair now it	7
pair now not	-6
pair now she	19
pair now that	-8
pair number he'll	12
pair nursery sash	10
pair nut had	11
pair o all	6
pair o i	-15
pair o it's	-13
pair o no	-15
pair o not	12
pair o one	-14
pair o rings	-5
pair o that	19
pair o that's	12
pair o the	20
pair o they	9
pair o we	-7
pair of a	-14
pair of each	10
pair of it	-12
pair of the	16
pair of them	-11
pair off again	-7
pair off in	-8
pair off the	40
pair oh four	11
pair ok cartridge	7
pair okay the	-12
pair old one	16
pair on a	-9
pair on i	19
pair on it	-6
pair on that	20
pair on the	-40
pair on too	17
pair on with	-6
pair once the	-7
pair one bag	-5
pair one by	-8
pair one coat	-7
pair one double	-5
pair one finger	-10
pair one for	-5
pair one from	6
pair one hour	-6
pair one i	9
pair one im	-6
pair one in	25
pair one is	-10
pair one more	-7
pair one new	-6
pair one of	8
pair one oh	8
pair one on	-11
pair one over	7
pair one ten	-5
pair one tube	-6
pair one twenty	10
pair one was	-10
pair one's outta	26
pair only had	-7
pair only the	16
pair op 2	7
pair op two	-9
pair opened up	-6
pair opening is	14
pair other two	-6
pair our ceiling	-8
pair our side	12
pair out on	9
pair outta the	26
pair over by	9
pair over in	-9
pair over the	9
pair paint it	-6
pair painted shut	11
pair pane is	-5
pair panes are	-6
pair pantry door	-8
pair pattern over	-8
pair peg rail	-8
pair picked one	11
pair picked up	-29
pair piece for	-6
pair piece of	6
pair pipe is	-20
pair place on	-11
pair planed nae	-6
pair planks are	10
pair plate one	10
pair ply at	13
pair pocket door	-17
pair point hanging	-6
pair pole motor	7
pair poles over	9
pair post is	-18
pair put a	-10
pair put in	8
pair put the	-13
pair put up	-5
pair r h	-14
pair rail got	-12
pair rail post	-14
pair rail she	5
pair rang the	7
pair rehung shuts	6
pair relief valve	-9
pair required from	12
pair reset it	12
pair restroom drain	12
pair right side	-7
pair roll of	-5
pair rolling good	15
pair roofer is	-9
pair room door	10
pair room please	5
pair sandbox lid	10
pair sashes run	-11
pair says forget	23
pair says its	9
pair says leave	17
pair says never	19
pair says the	7
pair screen door	12
pair screw em	-11
pair screwed a	-15
pair screws i	-10
pair screws in	9
pair sealed roond	19
pair second coat	-13
pair she bought	9
pair she has	-7
pair she says	8
pair she wants	-6
pair she'd like	-9
pair shower 2	-15
pair shower arm	8
pair shut the	-10
pair shuts proper	10
pair shuts with	9
pair side door	7
pair sign i	-7
pair six is	10
pair skip it	6
pair sleeve anchors	22
pair solid as	-5
pair solid now	-14
pair spin room	10
pair stain block	12
pair still no	-6
pair still not	-5
pair stocks it	-9
pair stopped at	-11
pair store had	-13
pair strip in	-11
pair stuck back	10
pair stuck down	8
pair supply line	-10
pair swapped it	-7
pair swim ladder's	-10
pair swings free	10
pair tell the	7
pair texted gus	12
pair thank god	16
pair that bracket	-8
pair that closet	19
pair that comes	-10
pair that door	-12
pair that hole	-9
pair that one	-37
pair that one's	21
pair that rail	-7
pair that wall	-10
pair that's off	6
pair that's why	-9
pair the 2	-7
pair the ac	-6
pair the ballast	-12
pair the basement	20
pair the bay	-6
pair the bedroom's	9
pair the bell	-6
pair the board	-7
pair the bottom	-10
pair the box	-21
pair the bulb	12
pair the cartridge	11
pair the ceiling	-7
pair the check	22
pair the chimney	6
pair the chute	15
pair the cistern	-7
pair the closer	14
pair the closet	17
pair the co	-13
pair the cord	-11
pair the day	6
pair the dimmer	14
pair the dining	-7
pair the door	7
pair the door's	-6
pair the double	12
pair the drain	-7
pair the drip	-6
pair the dumpster	13
pair the end	11
pair the entry	11
pair the fan	-8
pair the fire	16
pair the fist	10
pair the flapper	-5
pair the floor	-22
pair the foam	-5
pair the four	8
pair the garage	7
pair the grab	-5
pair the grate	11
pair the grille	-8
pair the hall	-7
pair the hand	6
pair the hank	6
pair the henhouse	9
pair the hinge	-15
pair the house	-13
pair the inside	-8
pair the joist	-6
pair the kit	13
pair the ladder	25
pair the lamp	8
pair the landlord	-11
pair the last	-7
pair the latch	-32
pair the laundry	12
pair the left	-15
pair the light	-8
pair the lock	-8
pair the mail	6
pair the mens	-7
pair the mirror	-5
pair the mouse	-11
pair the new	-6
pair the newel	12
pair the next	19
pair the nook	-5
pair the opener	-5
pair the other	-24
pair the outlet	-11
pair the painter	16
pair the panel	-7
pair the pantry	8
pair the parlor	15
pair the patch	-16
pair the pharmacy	-7
pair the plate	22
pair the porch	-6
pair the post	-10
pair the putty	-9
pair the rail	14
pair the range	7
pair the reel	-7
pair the rod	5
pair the roll	-11
pair the roof	-6
pair the sash	17
pair the screen	-5
pair the seats	-5
pair the shelves	-12
pair the shop	11
pair the side	30
pair the siding	8
pair the six	-10
pair the slider	5
pair the slides	10
pair the soft	-5
pair the spring	31
pair the stair	-9
pair the step	14
pair the stop	-6
pair the stove	32
pair the street	11
pair the studs	-6
pair the supply	-12
pair the sweep	7
pair the switch	-11
pair the table	12
pair the tack	7
pair the tap	14
pair the three	10
pair the tile	-16
pair the tin	10
pair the toilet	11
pair the top	24
pair the track	-9
pair the truck	-12
pair the twenty	10
pair the two	34
pair the upper	-6
pair the usb	9
pair the valve	-12
pair the van	-27
pair the wall	-12
pair the water	9
pair the watter	22
pair the way	12
pair the weeping	-6
pair the white	10
pair the whole	-17
pair the window	5
pair the wire	-7
pair the yard	-11
pair them closet	15
pair them panes	-6
pair there too	-6
pair there was	7
pair there with	8
pair there's a	-16
pair they don't	12
pair they had	-20
pair they only	-7
pair they were	-9
pair thing is	14
pair thirty one	16
pair this time	-12
pair three by	12
pair three is	-19
pair through it	-14
pair through the	-8
pair tight now	5
pair tile discontinued	-7
pair tile pattern	-8
pair tiles are	-8
pair tiles by	-7
pair time thank	-8
pair to a	-11
pair to buy	-11
pair to friday	-9
pair to go	-9
pair to monday	-7
pair to that	11
pair to the	22
pair toe kick	-6
pair toilet seat	5
pair too far	9
pair took em	-5
pair took the	10
pair track online	-9
pair trim off	-8
pair tub of	11
pair turned the	11
pair twelve foot	-5
pair twenty four	-8
pair twenty minutes	-8
pair twenty one	11
pair twenty two	-11
pair two clamps	-11
pair two coats	10
pair two foot	-5
pair two i	14
pair two inches	6
pair two is	20
pair two long	-5
pair two more	-7
pair two new	13
pair two of	-19
pair two screws	18
pair two the	-11
pair uh the	5
pair under nettie's	10
pair under the	-7
pair up a	-6
pair up by	10
pair up in	20
pair up like	-9
pair up monday	-6
pair up on	-13
pair up over	10
pair up the	-7
pair usb number	12
pair use the	-8
pair ut it	-13
pair ut it's	-9
pair ut no	-8
pair vacuum breaker	-7
pair valve is	-11
pair w the	-5
pair wad in	12
pair waits on	-12
pair wall in	5
pair wall is	-8
pair wall where	10
pair want a	-5
pair want the	14
pair wants a	-14
pair wants it	-5
pair wants the	-10
pair was a	21
pair was got	10
pair was just	24
pair was nothing	5
pair was only	14
pair was the	12
pair washer box	-6
pair washer is	8
pair water at	5
pair water board	10
pair we'll dae	-6
pair weeping one	-6
pair went in	9
pair went to	-9
pair were out	-7
pair when they	-6
pair whistle in	10
pair whole new	-6
pair whole thing	-7
pair window corded	-14
pair window in	7
pair window lock	7
pair wire nut	17
pair with a	20
pair with both	-5
pair with his	14
pair with me	13
pair with one	-10
pair with that	20
pair with the	17
pair won't hold	-10
pair would like	-8
pair yard called	-6
pair you can't	25
pair you cant	-8
pair you could	7
pair you'd never	7
put false false	8
put false true	-87
put true false	64
put true true	-17
rarest 1	43
rarest 1 read done head no	14
rarest 1 read done head own	10
rarest 1 read done+fixed head own	34
rarest 1 read done+flaw head no	24
rarest 1 read done+flaw head own	6
rarest 1 read done+goods head no	-7
rarest 1 read fixed head no	18
rarest 1 read flaw head before	14
rarest 1 read flaw head own	5
rarest 1 read flaw+goods head own	6
rarest 1 read goods head no	-29
rarest 1 read none head no	10
rarest 1 read none head own	17
rarest 1 read plan head before	-8
rarest 1 read plan head no	-21
rarest 1 read plan head own	-42
rarest 2 read done head no	-12
rarest 2 read done head own	-23
rarest 2 read done+fixed head no	-16
rarest 2 read done+flaw head no	-25
rarest 2 read done+flaw head own	-17
rarest 2 read done+plan head no	-7
rarest 2 read fixed head no	13
rarest 2 read fixed head own	10
rarest 2 read flaw head no	23
rarest 2 read flaw head own	16
rarest 2 read flaw+plan head no	-6
rarest 2 read goods head no	-14
rarest 2 read goods head own	9
rarest 2 read none head before	15
rarest 2 read none head no	8
rarest 2 read none head own	-20
rarest 2 read plan head before	-12
rarest 2 read plan head no	23
rarest 2 read plan head own	36
rarest 3	-14
rarest 3 read done head no	5
rarest 3 read done head own	18
rarest 3 read done+plan head own	9
rarest 3 read fixed head no	10
rarest 3 read flaw head no	-12
rarest 3 read flaw head own	-26
rarest 3 read flaw+plan head no	-5
rarest 3 read plan head no	-11
rarest 3 read plan head own	8
rarest 4	-50
rarest 4 read done head before	12
rarest 4 read done head named	15
rarest 4 read done head no	-6
rarest 4 read done+fixed head before	14
rarest 4 read done+fixed head no	-10
rarest 4 read done+flaw head named	-19
rarest 4 read done+plan head no	8
rarest 4 read fixed head before	11
rarest 4 read fixed head no	-9
rarest 4 read flaw head own	-26
rarest 4 read flaw+goods head before	-5
rarest 4 read goods head before	-22
rarest 4 read none head own	-12
rarest 4 read plan head before	-24
read done flaw	18
read done work	21
read done+fixed flaw	19
read done+fixed+plan flaw	12
read done+flaw flaw	6
read done+flaw work	-21
read done+plan flaw	-17
read done+plan work	13
read fixed flaw	60
read fixed work	-21
read fixed+plan flaw	11
read flaw work	-20
read flaw+goods flaw	-8
read flaw+plan flaw	-17
read goods flaw	-37
read goods work	-27
read goods+plan flaw	-9
read none work	17
read plan flaw	-39
read plan work	-14
size long	-41
size short	19
waiting	-39
well false false	-15
well false true	-82
well true false	70
word 1	-64
word 10	-25
word 12	-6
word 14	-6
word 15	-13
word 2	-34
word 2x4	-7
word 30	-11
word 36	-9
word 5	-29
word 6	-22
word 8	10
word 9	5
word a	37
word about	20
word abt	-6
word ac	-10
word add	-7
word after	31
word again	-56
word against	6
word ain't	-6
word aint	-8
word air	-7
word all	7
word alone	8
word along	23
word already	17
word also	-21
word an	-15
word another	-6
word answer	12
word any	-7
word anyhow	11
word anything	7
word anyway	-8
word anywhere	27
word apart	-7
word apt	-14
word are	12
word around	-24
word arrive	31
word as	32
word asked	-15
word at	-32
word ause	-18
word baby	-6
word backed	-12
word bad	-17
word bag	-9
word bags	-7
word ballast	-10
word bangs	15
word bar	-11
word base	-17
word basement	7
word bathroom	-7
word battery	-9
word bays	-5
word be	-22
word bead	-9
word been	-19
word behind	28
word bell	-16
word below	-11
word bench	-9
word bend	-6
word bent	6
word bit	5
word blade	15
word block	-11
word blocking	10
word bloke	11
word blow	-5
word blue	-5
word boards	-9
word bolt	19
word bolts	-18
word boot	11
word boss	-9
word both	56
word bought	19
word bracket	-25
word brackets	-12
word brass	-29
word breaker	-27
word broke	-9
word bucket	-10
word butter	9
word buy	-22
word by	-16
word cabinet	-7
word cable	17
word called	-44
word cam	12
word came	33
word can	-13
word can't	16
word cap	-7
word carpet	-8
word cartridge	-6
word cast	-6
word cat	-11
word caulk	-6
word caulked	-6
word ceiling	-15
word cement	-9
word chain	9
word chair	-10
word change	8
word changed	8
word changing	8
word check	-6
word christmas	5
word chrome	-5
word chute	8
word clamp	10
word clamps	8
word clean	-14
word cleaned	20
word clears	12
word close	8
word closer	-10
word closet	8
word closing	8
word co	-13
word coat	-26
word coffee	8
word cold	-7
word color	-9
word come	32
word comes	-16
word complete	22
word cooked	13
word cord	-10
word corner	-7
word could	8
word count	-5
word counted	-10
word counter	-8
word cover	10
word covers	-5
word cracked	-14
word cross	23
word cut	-6
word d	-9
word dae	-7
word damp	-16
word day	8
word dead	-24
word deck	-10
word depot	-5
word did	39
word didnt	-5
word discontinued	-7
word do	-23
word dock	6
word doctor	-7
word doesn't	12
word doesnt	17
word dog	15
word don't	12
word dont	-16
word door's	-8
word doors	-6
word double	-12
word dover	-8
word down	30
word downstairs	11
word drags	-7
word drain	-17
word drap	25
word drawer	-27
word dried	-18
word drip	-14
word driver	-6
word drop	9
word dropped	25
word dry	39
word drywall	-8
word dumpster	13
word each	7
word ecause	-6
word edge	-20
word efter	-6
word eight	-7
word eighteen	-14
word eighths	10
word eighty	-6
word either	-13
word eleven	12
word em	5
word end	-13
word entry	-5
word even	-7
word every	-21
word everything	7
word exam	-7
word extension	7
word extra	-12
word eye	13
word fan	-12
word far	10
word faucet	-10
word feet	-10
word fifty	-7
word fill	-7
word filled	21
word filter	10
word finally	10
word find	9
word fine	-18
word finger	-10
word finish	9
word finished	-26
word fire	27
word first	14
word five	-15
word fix	6
word fixed	5
word flange	6
word flapper	-5
word flat	19
word flight's	12
word float	-5
word floor	-9
word foam	-7
word foot	-31
word footer	-7
word for	-66
word forget	38
word forgot	-6
word four	-34
word free	19
word friday	-32
word fridge	-5
word from	-13
word front	-29
word front's	6
word full	9
word gal	-11
word garage	5
word gave	-8
word get	-6
word gets	-10
word gfci	11
word glass	-15
word glides	-5
word glued	12
word go	-27
word god	16
word goes	21
word going	54
word gone	7
word gonna	9
word good	62
word got	-21
word gotta	-13
word grab	-8
word grandson	6
word grate	-9
word grease	29
word grille	-8
word ground	-6
word grout	-8
word gus	9
word gutter	-8
word guy	-10
word guys	15
word had	17
word half	11
word hand	-16
word handle	-45
word handrail	-13
word hanging	24
word hangs	-8
word hank	5
word happy	9
word hard	12
word hardware	-8
word has	-6
word hauling	10
word have	-15
word he'll	9
word he's	25
word head	10
word hear	31
word heat	-18
word held	12
word hen	-24
word henhouse	9
word her	32
word here	-22
word him	-7
word himself	-12
word hinge	-34
word hinges	-28
word history	9
word hit	-12
word hold	-10
word holes	-7
word home	-15
word hook	-9
word hooked	16
word hose	27
word hour	-6
word house	-12
word how	8
word hundred	-10
word hung	-28
word i	-21
word i'll	-7
word i'm	-12
word i've	-10
word if	-6
word ill	-7
word im	-6
word in	6
word inch	-36
word insulated	-6
word insulation	6
word into	-18
word iron	-10
word is	-17
word isn't	15
word isnt	-7
word it	45
word it's	-14
word itself	11
word joist	-7
word just	-27
word keep	-7
word keeps	-5
word kicked	14
word kind	-18
word kit	-28
word kitchen	-22
word know	12
word label	12
word ladder	19
word lady	8
word lags	-5
word landing	9
word landlord	7
word landlord's	22
word last	-21
word latch	-10
word leave	11
word left	-7
word leg	10
word length	-5
word level	12
word lid	8
word light	-30
word lights	-5
word like	47
word line	-14
word list	-7
word listen	14
word lit	19
word little	-14
word locks	14
word long	-7
word longer	-13
word look	-5
word looked	-9
word looking	-8
word loose	37
word low	-5
word lumber	-16
word mail	-6
word man	7
word maple	-6
word marine	-7
word maybe	8
word meant	6
word meanwhile	10
word measured	-6
word mens	-7
word mill	-6
word min	16
word mind	6
word mine	-7
word minute	8
word mm	-6
word monday	-11
word motor	-14
word moves	-10
word moving	-9
word mrs	-8
word much	-5
word must	-12
word my	35
word myself	23
word nae	-6
word nd	-6
word need	-32
word nettie's	20
word never	20
word newel	10
word next	6
word nice	17
word nine	-10
word nineteen	-12
word ninety	-5
word nipped	-12
word no	47
word nobody	-11
word noon	-7
word nothin	15
word nothing	32
word now	77
word number	5
word nursery	14
word nut	9
word o	-30
word oak	-6
word of	-27
word off	39
word oh	18
word oiled	-16
word ok	10
word okay	14
word old	-29
word on	21
word one	-5
word ones	-9
word only	-34
word open	16
word or	-11
word order	-11
word ordered	-22
word other	-15
word ought	12
word our	-11
word out	-10
word outlet	-21
word outside	-8
word outta	26
word over	12
word overnight	-13
word owner	13
word pail	-10
word paint	-11
word painted	7
word painter	15
word painting	-6
word pan	-7
word panel	6
word panes	-14
word part	-6
word past	23
word patch	-5
word pattern	-7
word pau	12
word peg	-11
word pergola	-7
word photocell	-10
word pick	-7
word picked	-17
word piece	21
word pieces	11
word pine	-8
word place	-19
word planed	-18
word plate	8
word plugged	-15
word plum	14
word plus	24
word pocket	-6
word point	-12
word pole	6
word popped	6
word post	-18
word poured	-8
word pressure	13
word pretty	11
word primed	8
word pull	-13
word pump	-5
word push	-9
word put	7
word putting	7
word putty	-8
word quarter	-5
word quit	22
word r	-17
word rack	-5
word rail	-33
word rain	-8
word rained	-7
word ran	33
word rang	6
word range	-9
word rattles	-6
word ready	11
word regulator	16
word rehung	14
word relief	-9
word required	11
word reset	20
word rest	23
word right	29
word ring	-6
word ripped	-7
word rm	-5
word rock	8
word rocking	8
word rod	-22
word roll	-6
word rollers	-14
word rolling	15
word roof	-6
word roofer	-9
word room's	-18
word roond	19
word round	-7
word run	-12
word running	9
word rusted	-8
word s	-19
word said	-9
word sand	8
word sanded	22
word sanding	7
word sash	7
word saw	-8
word says	39
word scratch	11
word screen	-22
word screw	11
word screwed	8
word screws	13
word seal	-12
word sealed	6
word seat	-10
word second	-11
word see	12
word seized	-7
word set	-6
word setting	6
word seven	5
word sharp	7
word she	-17
word she'd	-9
word she's	44
word sheet	-6
word sheets	12
word shelf	-27
word shop	-13
word short	16
word should	11
word showed	-13
word shower	-19
word shut	-11
word shuts	25
word side	25
word sides	14
word sign	-8
word sign's	-10
word sink	-6
word sir	-7
word sister	-9
word sits	14
word sitting	-19
word six	17
word size	-8
word skip	23
word slats	-11
word smoke	-6
word soaked	-5
word soldered	-8
word solid	-8
word some	-7
word somebody	9
word sound	-5
word spare	-14
word special	-7
word split	-28
word spring	7
word springs	-7
word square	-10
word squeak	8
word stain	-15
word stairs	-6
word stall	-9
word start	-5
word steady	9
word steps	7
word still	-23
word stock	-10
word stocks	-12
word stop	-13
word store	-27
word stove	12
word straight	28
word street	-5
word strike	-7
word stringer	-6
word strip	-18
word stripped	-15
word stuck	37
word studs	-6
word stuff	16
word suite	15
word summer	-8
word supply	-26
word swapped	11
word sweating	-10
word sweep	-17
word swings	7
word switch	-25
word t	-6
word table	-6
word takes	-18
word tannie	16
word tap	-12
word taped	21
word tell	6
word ten	-23
word tested	25
word texted	10
word than	11
word thank	7
word that	-9
word that's	-10
word thats	-17
word the	-30
word them	11
word there	-6
word there's	-22
word theres	-8
word they	-42
word they'd	-9
word they're	13
word theyre	6
word thing	35
word third	9
word thirty	22
word this	-14
word those	26
word thought	25
word thread	7
word three	-36
word through	-23
word thru	22
word thursday	-15
word tight	32
word tightened	14
word tiles	-7
word till	-15
word time	-18
word times	-6
word tin	8
word to	-22
word toggles	6
word toilet	-14
word told	-14
word tomorrow	-19
word too	7
word took	14
word top	15
word towel	-9
word town	-10
word track	-8
word treated	-6
word trim	-10
word tripped	15
word truck	7
word tube	29
word tuesday	-18
word turn	20
word turned	21
word turns	21
word twelve	-13
word twice	-14
word uh	15
word um	-9
word under	-16
word unit	-15
word until	-6
word up	29
word upper	-8
word upstairs	37
word us	25
word usb	-5
word use	-9
word used	8
word ut	-50
word vacuum	-6
word valve	-27
word valves	-18
word van	-6
word varnish	-6
word vent	-12
word volts	12
word w	-16
word waits	-13
word wall	-18
word walls	-16
word want	-6
word wants	-23
word warm	-11
word washer	-9
word water	9
word watter	22
word wax	-9
word way	39
word we	-48
word we'll	-6
word we're	6
word weatherstrip	-6
word wednesday	-21
word week	-7
word weeping	-8
word well	43
word went	-6
word were	-8
word wet	-13
word what	-8
word what's	-7
word when	-23
word where	10
word while	-16
word white	-9
word whole	-16
word why	-9
word window	-17
word wire	17
word with	30
word wont	-8
word wood	-16
word worn	-18
word would	8
word wrap	-6
word x	-27
word ya	18
word yard	-13
word year	10
word yes	-16
word yesterday	19
word yet	-27
word you'd	7
work	-10
`;
