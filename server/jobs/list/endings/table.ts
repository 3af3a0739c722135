/** Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it. */
export const ENDINGS = `
after -	-8
after - -	-8
after are	24
after at the	6
after back	12
after both	-8
after bought	-24
after bought -	-23
after came	-6
after clears	5
after closes	-6
after closes it	-6
after doesn't	14
after doesn't bang	8
after down	13
after dry	8
after for	-9
after for the	-9
after from	25
after got	7
after had	8
after has	7
after here	-6
after i	-19
after i found	-10
after in	8
after in the	-12
after is	24
after is a	-15
after it	-11
after its	-14
after kit	-8
after n	17
after next	-6
after not	-7
after of	-11
after of the	-10
after off	44
after off -	26
after off come	10
after on	-18
after on the	-7
after only	-8
after pattern	-7
after pattern over	-7
after shuts	18
after stop	-17
after the	-18
after tight	13
after tight -	10
after was	12
after with	-15
after yet	-8
after yet -	-8
ahead -	12
ahead 2nd	-6
ahead a	32
ahead both	-13
ahead brass	-5
ahead ceiling	-10
ahead chute	-6
ahead closet	30
ahead deck	-12
ahead grab	-11
ahead i	-8
ahead kitchen	-11
ahead nd	-7
ahead new	47
ahead nine	-12
ahead no	-7
ahead of	-9
ahead old	-11
ahead on	12
ahead one	-12
ahead path	-24
ahead pocket	-7
ahead porch	-7
ahead room	8
ahead screen	24
ahead six	10
ahead that	-20
ahead the	9
ahead those	13
ahead toilet	-5
ahead two	17
ails false denies false read done	8
ails false denies false read done+flaw	17
ails false denies false read fixed	-7
ails false denies false read flaw	-23
ails false denies false read flaw+goods	-11
ails false denies false read flaw+plan	-13
ails false denies false read goods	-22
ails false denies false read none	20
ails false denies false read plan	-40
ails false denies true read done+fixed	11
ails false denies true read fixed	-18
ails false denies true read flaw	10
ails false denies true read none	-26
ails false denies true read plan	11
ails true denies false read done	-22
ails true denies false read done+fixed	8
ails true denies false read done+flaw	-15
ails true denies false read fixed	64
ails true denies false read goods	-8
ails true denies false read none	9
ails true denies false read plan	-13
ails true denies true read done	40
ails true denies true read flaw	12
any	-12
asked false	-10
before 0	-58
before 1	38
before 2	28
cure back denies false	-17
cure back denies true	-38
cure bent denies false	8
cure block denies false	19
cure bolt denies false	19
cure bon denies false	22
cure burn denies false	15
cure catch denies false	11
cure clean denies false	-11
cure clear denies false	20
cure clo denies false	-11
cure coat denies false	8
cure cold denies false	-11
cure cut denies false	-22
cure dead denies false	-18
cure down denies false	10
cure dry denies false	35
cure flat denies false	-6
cure glu denies false	-29
cure glu denies true	-9
cure heat denies false	6
cure hol denies false	-10
cure hold denies true	-17
cure hot denies false	29
cure in denies false	-22
cure in denies true	-35
cure know denies false	-9
cure latch denies false	28
cure leak denies false	-44
cure light denies false	-20
cure new denies false	24
cure new denies true	-6
cure on denies false	-19
cure on denies true	-19
cure open denies false	6
cure quit denies true	11
cure read denies false	-6
cure replac denies false	-20
cure run denies false	22
cure run denies true	15
cure screw denies false	42
cure seal denies false	-24
cure shutof denies false	-5
cure shutof denies true	-13
cure slid denies false	-6
cure solid denies false	8
cure stay denies false	-14
cure swing denies false	9
cure tight denies false	10
cure toggl denies false	13
cure trip denies false	20
cure trip denies true	12
cure turn denies false	24
cure up denies false	-18
cure up denies true	-10
cure whit denies false	-8
cure whol denies true	-5
cure wood denies false	-6
cured false ails false denies false	-16
cured false ails false denies true	-43
cured false ails true denies true	28
cured false head before denies false	-32
cured false head before denies true	8
cured false head named denies false	34
cured false head no denies true	-19
cured false head own denies false	-19
cured false head own denies true	-6
cured false read done	8
cured false read done+fixed	20
cured false read done+flaw	-5
cured false read done+plan	13
cured false read fixed	5
cured false read flaw+goods	-9
cured false read flaw+plan	-8
cured false read goods	-25
cured false read none	-29
cured false read plan	-34
cured true ails false denies false	-16
cured true ails false denies true	10
cured true ails true denies false	26
cured true ails true denies true	21
cured true head before denies false	10
cured true head before denies true	-14
cured true head no denies false	-12
cured true head no denies true	19
cured true head own denies false	6
cured true head own denies true	25
cured true read done	16
cured true read done+fixed	-10
cured true read done+goods	-13
cured true read fixed	37
cured true read flaw+plan	-12
cured true read goods	6
cured true read goods+plan	-9
cured true read none	32
cured true read plan	-11
cures 0 true	-29
cures 1 true	5
cures 2 true	36
days many	-39
days none	21
due false	-43
due true	41
end 1	-5
end 2	11
end 20	-10
end 4	-10
end 6	-8
end adhesive	-20
end again	-9
end all	35
end already	9
end anchors	16
end anyhow	9
end arm	-11
end away	-5
end back	12
end backup	9
end bag	-6
end bang	14
end bar	-8
end bare	10
end battery	-9
end bent	7
end blades	-14
end board	11
end boards	-10
end both	-8
end bought	30
end box	19
end br	16
end bracket	-9
end breaker	-20
end broken	-7
end brushed	-19
end buy	-13
end cabinet	-5
end called	-6
end came	47
end can	6
end cap	-7
end caps	16
end carpet	7
end cartridge	10
end caulk	11
end ceiling	-5
end cement	-6
end changed	15
end clamps	-19
end close	7
end closed	17
end closes	-7
end coat	17
end come	29
end complete	20
end cord	-11
end counter	-16
end cracked	-12
end creased	-8
end cut	8
end day	5
end dead	-8
end dig	-6
end dimmer	9
end discontinued	-6
end door	11
end dover	-7
end down	14
end drip	7
end drips	-9
end dry	18
end dumpster	21
end either	-5
end elbow	-10
end em	15
end end	6
end fan	-6
end far	11
end feet	-8
end fifteen	9
end fine	-13
end finger	-7
end finished	-13
end five	-13
end flat	20
end floor	-18
end foot	-17
end for	-5
end friday	-11
end ft	-9
end glue	-8
end glued	14
end go	-11
end god	7
end gone	13
end good	6
end had	5
end hall	-5
end hand	-21
end here	-5
end him	15
end history	6
end hold	-11
end holes	-9
end hook	16
end hooks	16
end hose	5
end hot	31
end hour	-9
end in	5
end inch	-29
end inches	-5
end inside	-7
end iron	-6
end is	19
end it	38
end itself	9
end length	-6
end light	-17
end lights	-12
end limewash	29
end lock	-6
end loose	33
end me	-8
end mesh	28
end minutes	18
end monday	-7
end mouse	9
end moving	-7
end new	24
end next	-10
end nice	11
end night	-7
end no	-9
end now	27
end oh	-7
end on	32
end one	-28
end ones	21
end only	-6
end ordered	-17
end out	-25
end outlet	5
end over	-11
end paint	-7
end painted	-10
end pair	-5
end panes	-13
end paper	-6
end peephole	7
end peg	-8
end pipe	-9
end place	-9
end plaster	-5
end plate	-10
end ply	5
end plywood	-6
end po	-7
end post	-7
end quit	11
end rattles	-6
end ready	11
end rock	9
end roll	-7
end runs	15
end said	10
end scraped	-14
end screw	28
end screwed	18
end screws	13
end second	22
end set	-24
end sheared	12
end shelf	17
end shimmed	6
end short	-6
end side	9
end silicone	-13
end sixteen	-12
end slides	-7
end snapped	-15
end soldered	-5
end solid	7
end spare	-12
end spline	-5
end spring	10
end step	-8
end stock	-11
end stop	-18
end straight	19
end stripped	-18
end summer	-9
end swapped	13
end switch	-6
end systems	11
end tank	-7
end tap	13
end tape	-10
end tested	13
end that	-14
end there	-7
end thing	12
end those	-7
end though	12
end thread	14
end tight	39
end til	-6
end tiles	18
end times	6
end tin	6
end toilet	30
end tomorrow	-12
end top	21
end town	-9
end trap	6
end truck	-5
end tube	23
end tuesday	-5
end twelve	-11
end twice	-7
end two	-17
end us	11
end van	-17
end wall	-28
end walls	13
end way	-10
end wednesday	-7
end week	-12
end well	7
end white	-22
end window	-7
end wood	-16
end workshop	-13
end yes	-5
end yet	-16
end you	7
first 1	-11
first 18	-19
first 2	-20
first 2nd	-11
first 5	-9
first a	-6
first about	11
first ac	16
first all	-10
first also	-11
first ause	-7
first back	-15
first basement	-11
first bath	15
first bedroom	-8
first bench	24
first blind	16
first board	12
first boat	-6
first boss	16
first both	14
first bought	-12
first box	18
first breaker	-12
first cabin	11
first cabinet	18
first cartridge	6
first ceiling	13
first changing	10
first chapel	-8
first clamps	26
first closer	-16
first closer's	-11
first closet	-15
first cold	-15
first crack's	9
first did	19
first door	33
first door's	-9
first doors	-6
first drawer	-7
first dryer	24
first dutchmans	-5
first edge	-14
first exit	-7
first fan	17
first filled	17
first first	-10
first fished	5
first five	-9
first floor	-9
first found	24
first four	13
first from	-8
first front	-8
first garage	-13
first gate	21
first gfci	11
first glass	-10
first goes	-10
first good	8
first got	-44
first gutter	-16
first handrail	25
first hanley	7
first he	-10
first he's	7
first hen	-19
first hinge	-5
first hinges	44
first hole	6
first hood's	12
first hose	25
first i	-40
first in	7
first is	15
first it	19
first its	-20
first jet	14
first kitchen	-11
first landlord	-11
first landlord's	21
first last	28
first latches	21
first lateral	-6
first light	13
first lock	9
first lr	-10
first make	-11
first me	-10
first mill	-5
first mirror	-16
first mrs	18
first navy's	-6
first nine	-13
first no	-17
first nursery	10
first o	-21
first ok	-7
first okay	33
first old	-17
first once	-5
first one	-22
first op	7
first ordered	-6
first outlet	11
first oven	-20
first paper	-8
first pipe	-30
first pocket	-11
first pole	22
first poles	11
first porch	-15
first post	-10
first pulled	-16
first put	-15
first ran	26
first screen	26
first screens	13
first second	-23
first set	11
first she	-18
first she's	13
first shelf	-8
first shimmed	6
first shower	7
first sill	-11
first six	24
first smoke	8
first still	-9
first stopped	-8
first strike's	6
first tap	-7
first tape	-6
first tavo	-15
first texted	15
first that	9
first that's	-19
first them	9
first there's	-24
first they	-14
first they're	-6
first those	13
first threshold	15
first tiles	-8
first toilet	12
first took	9
first turned	-6
first uh	8
first um	19
first ut	-31
first vacuumed	-8
first wall	-7
first we	-9
first well	-15
first went	-12
first window	-7
first window's	7
first ya	6
first your	17
first zone	8
flaw gone	10
flaw said false	-30
flaw said true	5
head before	14
head before read done	18
head before read fixed	22
head before read flaw	13
head before read flaw+goods	-6
head before read goods	-6
head before read goods+plan	-5
head before read none	14
head before read plan	-23
head named read done	12
head named read done+flaw	-16
head no	-18
head no read done+fixed	-25
head no read done+fixed+plan	-6
head no read done+flaw	27
head no read done+plan	6
head no read fixed	20
head no read flaw+goods	-9
head no read flaw+plan	-15
head no read goods	-46
head no read none	19
head no read plan	-19
head own	-6
head own read done	10
head own read done+fixed	32
head own read done+flaw	-22
head own read done+plan	-11
head own read flaw	-6
head own read flaw+goods	-5
head own read goods	12
head own read plan	-16
met false	27
met true	-64
named 0 head before	-7
named 0 head no	-57
named 0 head own	-34
named 1 head before	15
named 1 head named	-19
named 1 head no	79
named 1 head own	22
named 2 head named	24
named 2 head no	-42
named 2 head own	11
open	-14
own 0	-20
own 0 read done	8
own 0 read done+fixed	-17
own 0 read done+flaw	-29
own 0 read done+plan	15
own 0 read fixed	22
own 0 read flaw	-16
own 0 read goods	-14
own 0 read none	28
own 0 read plan	-16
own 1	-31
own 1 read done	-5
own 1 read done+fixed	11
own 1 read done+flaw	-5
own 1 read done+flaw+goods	19
own 1 read done+goods	-6
own 1 read fixed	19
own 1 read flaw	-8
own 1 read flaw+goods	-6
own 1 read flaw+plan	-16
own 1 read goods	-19
own 1 read goods+plan	-13
own 1 read plan	-7
own 2	27
own 2 read done	35
own 2 read done+fixed	6
own 2 read done+plan	-15
own 2 read flaw+goods	-10
own 2 read goods	-7
own 2 read goods+plan	11
own 2 read none	14
own 2 read plan	-35
own 3	28
own 3 read flaw	27
own 3 read flaw+plan	-5
pair 1 4	12
pair 10 20	-6
pair 12 ft	-7
pair 18 in	-19
pair 2 bottom	-8
pair 2 too	-6
pair 3 16	15
pair 3 8	-16
pair 8 off	-6
pair a board	12
pair a click	17
pair a door	-16
pair a fire	9
pair a gal	-6
pair a good	8
pair a jewelry	-6
pair a leg	13
pair a little	14
pair a loose	13
pair a mouse	7
pair a new	-12
pair a piece	9
pair a plate	-6
pair a po	-7
pair a rock	7
pair a roll	7
pair a special	-7
pair a truck	15
pair about his	22
pair about that	-6
pair about the	34
pair after all	19
pair again rail	11
pair again right	-6
pair again the	-5
pair against the	24
pair all day	-16
pair all four	-10
pair all night	-5
pair all of	-15
pair all the	9
pair all three	15
pair all up	7
pair an inch	-10
pair answer monday	15
pair are all	13
pair are back	14
pair are both	-6
pair are creased	-8
pair are in	-11
pair are out	9
pair are rolling	15
pair are stuck	13
pair as a	10
pair as the	-6
pair as well	7
pair at all	5
pair at four	-9
pair at it	-11
pair at that	-8
pair back door	-10
pair back from	-8
pair back in	13
pair back on	-15
pair back room	-15
pair back to	-6
pair basement is	-11
pair basement rail	-11
pair beam is	6
pair bedded it	10
pair before the	7
pair behind it	-10
pair bench is	13
pair between you	8
pair board about	7
pair board two	22
pair boards down	-11
pair boat place	-6
pair boiler room	10
pair bolt sheared	12
pair bolts that	6
pair bolts they	7
pair bookcase is	15
pair boss lady	10
pair boss says	7
pair both in	-8
pair both panes	-11
pair bother with	10
pair bottom slats	-8
pair bought one	11
pair bought the	-8
pair bowl one	-7
pair box at	6
pair box i	7
pair box is	-5
pair box of	-6
pair box with	-6
pair breaker is	-6
pair broke off	11
pair brother in	11
pair by eight	9
pair by itself	14
pair by six	-7
pair by sixteen	-11
pair by the	-13
pair cabinet shop	-10
pair called the	-8
pair came with	-7
pair can push	-8
pair can't be	-12
pair cap nobody	-6
pair caps on	-26
pair care of	10
pair carpet tile	-6
pair cart is	6
pair ceiling tile	-11
pair changed her	-6
pair changing table	6
pair chapel doors	-8
pair check for	12
pair cleanout door	-6
pair closer arm	-25
pair closer is	-5
pair closer they're	10
pair closet doors	15
pair closet rod	9
pair closet systems	11
pair co op	-5
pair coat of	-9
pair coat on	-21
pair coats it's	-6
pair cold room	-6
pair come off	13
pair come spring	10
pair comes in	-9
pair comes off	-12
pair could park	13
pair could the	-7
pair cover on	8
pair cut out	-13
pair dead locker	12
pair deck boards	-12
pair did the	25
pair didn't have	14
pair do the	6
pair doctor is	7
pair doesn't bang	14
pair doesn't want	14
pair don't get	10
pair done 10	-6
pair done the	9
pair done two	-6
pair door clears	12
pair door doesn't	14
pair door i	-15
pair door in	-7
pair door is	21
pair door off	10
pair door stop	-17
pair door the	7
pair door too	-16
pair door top	12
pair door trim	-9
pair door with	-8
pair door's back	-21
pair doors are	8
pair double check	12
pair down at	-6
pair down tight	7
pair down to	25
pair drags on	-6
pair drain in	-7
pair drawer lock	7
pair dry after	-8
pair dry as	16
pair dryer off	16
pair dutchmans in	-5
pair eight bolts	6
pair eight inch	-10
pair eighteen inch	-6
pair epoxy finally	-6
pair exam one	9
pair exam two	-8
pair except the	-8
pair exit sign	-9
pair faucet in	9
pair faucet is	-7
pair faucet too	8
pair feed store	-5
pair fiction wall	-6
pair fill valve	10
pair filters yet	-7
pair finally one	-6
pair find that	18
pair fire door	-7
pair first coat	-10
pair first thing	19
pair five the	-6
pair flat three	-6
pair flat two	12
pair float is	-5
pair floor by	-5
pair floor drain	-10
pair floor dry	18
pair floor reads	-7
pair for flat	12
pair for now	-9
pair for that	-9
pair forget the	47
pair found a	24
pair found at	15
pair found our	-7
pair found the	-8
pair four foot	-6
pair four shelf	6
pair four walls	13
pair fourteen by	-11
pair from a	10
pair from our	15
pair from the	-18
pair front door	-5
pair furnace is	6
pair gal leaned	-5
pair garage door	-13
pair gate is	14
pair gave it	-6
pair gave me	13
pair get a	8
pair get the	6
pair gets a	-8
pair getting a	9
pair glass shop	-7
pair glides with	-8
pair goes all	9
pair goes up	42
pair going anywhere	25
pair going in	12
pair going to	5
pair good ones	-7
pair good too	15
pair got a	12
pair got heat	8
pair got its	19
pair got the	-29
pair got two	6
pair grab bar	-17
pair gus the	15
pair gutter is	-17
pair guys pulled	14
pair had a	-6
pair had epoxy	-6
pair had no	-17
pair had one	22
pair had the	-16
pair half a	8
pair half inch	-6
pair hall i	25
pair hand one	11
pair handle off	12
pair hanger bolt	12
pair has a	16
pair has gone	12
pair has had	7
pair has its	13
pair has no	-7
pair has one	-10
pair have it	-6
pair having the	12
pair he didn't	15
pair he had	-7
pair he wants	6
pair he'll answer	15
pair he's bringing	-6
pair head out	14
pair heads in	-5
pair heads on	8
pair heat i	8
pair heat tape	-18
pair henhouse now	11
pair her mind	-6
pair her new	-6
pair hey the	-5
pair hinges came	48
pair hinges vendor	-7
pair his kitchen	8
pair hole in	-13
pair holes are	-7
pair hosed it	15
pair hot water	11
pair hums like	10
pair i bent	16
pair i bought	14
pair i can	-10
pair i can't	-10
pair i cut	10
pair i did	26
pair i don't	-12
pair i filled	-14
pair i forgot	-8
pair i found	-11
pair i gave	-5
pair i got	-10
pair i had	21
pair i have	-15
pair i hit	-12
pair i keep	-7
pair i left	-5
pair i need	-7
pair i opened	11
pair i ordered	-5
pair i put	29
pair i ran	-10
pair i reset	14
pair i sat	8
pair i saw	-5
pair i says	7
pair i stuck	22
pair i thought	8
pair i told	-11
pair i tried	9
pair i walked	-7
pair i was	7
pair in a	-24
pair in all	-6
pair in brushed	-19
pair in dover	-7
pair in flat	-6
pair in front	-11
pair in hand	-5
pair in her	-6
pair in it	34
pair in my	6
pair in now	-6
pair in on	6
pair in one	-8
pair in stock	-11
pair in that	34
pair in the	-12
pair in there	12
pair in too	28
pair in white	-14
pair in yet	-5
pair inside of	-8
pair into the	-5
pair is a	-24
pair is all	5
pair is back	-15
pair is bent	-13
pair is close	15
pair is cracked	-7
pair is cut	7
pair is done	5
pair is finish	32
pair is finished	-17
pair is gone	-24
pair is good	-20
pair is hanging	-7
pair is history	6
pair is in	16
pair is not	-9
pair is off	-8
pair is old	-7
pair is on	-11
pair is passing	7
pair is ready	12
pair is straight	17
pair is tight	9
pair is touching	-5
pair is up	33
pair it a	-6
pair it again	-10
pair it closes	-8
pair it down	-13
pair it for	-8
pair it four	-7
pair it gets	-13
pair it in	10
pair it is	21
pair it it's	-9
pair it just	7
pair it needs	9
pair it now	-8
pair it on	18
pair it out	10
pair it over	6
pair it the	-7
pair it three	-8
pair it wants	-9
pair it was	8
pair it with	16
pair it's a	-12
pair it's dry	-8
pair it's in	8
pair it's like	-6
pair it's not	7
pair it's on	30
pair it's solid	-12
pair it's the	-23
pair it's up	15
pair its a	-7
pair its sitting	-8
pair its the	-13
pair its too	10
pair its two	12
pair jet guys	14
pair jewelry box	-6
pair kick plate	-14
pair kids got	8
pair kit its	-6
pair lady says	9
pair landlord says	-8
pair last 2	16
pair last locking	-8
pair last night	14
pair last thing	12
pair lateral 2	12
pair leave the	24
pair led tubes	-9
pair left end	13
pair left side	-11
pair leg under	13
pair light in	-7
pair light over	-6
pair like a	-10
pair like butter	21
pair like it	8
pair like the	-14
pair lime on	-6
pair locked out	-5
pair locker in	12
pair locking one	-8
pair look at	-6
pair machine is	19
pair made sure	8
pair make it	-8
pair make that	-9
pair mill called	-5
pair mind on	7
pair minutes made	8
pair mirror guy	-6
pair monday when	-11
pair mop head	14
pair moved it	-6
pair moved the	10
pair moves to	-9
pair mrs d	-10
pair my coat	20
pair my iron	-6
pair my name	-5
pair name on	-5
pair navy's done	-6
pair nd both	-15
pair nd for	-5
pair nd he	-10
pair nd it	-5
pair nd it's	35
pair nd its	-21
pair nd one	-15
pair nd put	-29
pair nd rolled	40
pair nd screwed	6
pair nd she	-12
pair nd she's	22
pair nd taped	-18
pair nd tested	7
pair nd that	-7
pair nd the	12
pair nd there's	-21
pair nd they're	17
pair nd three	8
pair nd took	27
pair nd two	-15
pair nd up	-12
pair need one	-6
pair need to	-7
pair needs a	6
pair nettie's shelf	13
pair never know	16
pair never mind	7
pair new board	8
pair new door	-23
pair new faucet	10
pair new one	-12
pair new ones	15
pair new tiles	16
pair new washer	-6
pair next to	-11
pair no drip	8
pair no filters	-7
pair no hole	-6
pair no i	-6
pair no leak	-6
pair no more	33
pair no need	-8
pair no on	8
pair no rattles	-6
pair no rollers	-8
pair nobody stocks	-14
pair not a	27
pair not going	12
pair not required	15
pair not the	-13
pair now i	17
pair now she	31
pair now the	-7
pair number he'll	15
pair nursery sash	10
pair o i	-13
pair o it	-10
pair o it's	-10
pair o its	-8
pair o not	15
pair o one	-18
pair o that	27
pair o that's	16
pair o thats	-10
pair o the	26
pair o they	-8
pair o three	22
pair o we	-10
pair of em	-9
pair of it	-10
pair of lime	-6
pair of the	24
pair of them	-15
pair of there	14
pair of those	7
pair off a	12
pair off again	-8
pair off come	10
pair off in	-16
pair off the	21
pair okay behind	8
pair okay i	8
pair okay the	22
pair old one	13
pair on a	-15
pair on about	8
pair on fiction	-6
pair on it	-18
pair on kids	8
pair on new	12
pair on one	-7
pair on that	13
pair on the	-34
pair on them	11
pair on those	-6
pair once the	-7
pair one bag	-7
pair one by	-9
pair one coat	-9
pair one finger	-8
pair one for	-6
pair one from	9
pair one i	23
pair one in	14
pair one is	-16
pair one kit	-6
pair one more	-6
pair one new	-7
pair one next	-6
pair one of	-7
pair one oh	7
pair one on	-9
pair one over	6
pair one piece	-5
pair one ten	-6
pair one thirty	13
pair one tube	-9
pair op 2	11
pair op one	-8
pair op two	11
pair opened up	-17
pair opening is	14
pair other two	-16
pair our ceiling	-7
pair our side	15
pair out by	7
pair out it	14
pair out of	-11
pair outlet box	-6
pair outside tap	-5
pair oven hinges	-7
pair over by	11
pair over in	-7
pair over the	21
pair owner again	11
pair painted shut	13
pair panes are	-6
pair pantry door	-11
pair paper towel	-6
pair park a	13
pair passing on	7
pair pattern over	-7
pair pedestal nine	7
pair pick up	-6
pair picked one	12
pair picked up	-27
pair piece of	6
pair pinch guard	-5
pair pipe man	-9
pair place had	-6
pair planks are	14
pair plate finally	12
pair plate i	-5
pair pocket door	-12
pair poles over	11
pair pre k	-6
pair pulled a	8
pair push that	-8
pair put a	-9
pair put in	8
pair put up	-10
pair quiet as	7
pair rail i	9
pair rail in	9
pair rail is	16
pair rail stays	11
pair ran a	-11
pair range is	7
pair required from	15
pair reset it	-5
pair right side	-6
pair right up	9
pair rock no	19
pair rod she	11
pair roll of	7
pair roll up	11
pair rolling good	15
pair roofer is	-11
pair room door	-15
pair sat there	14
pair saturday okay	8
pair saw float	-5
pair says forget	25
pair says its	11
pair says leave	30
pair says never	9
pair says no	12
pair says thats	8
pair says the	-15
pair scratch the	16
pair screen door	16
pair screwed a	-12
pair screwed down	24
pair screws in	19
pair second coat	-19
pair second one	-6
pair set screw	-5
pair she asked	-5
pair she bought	10
pair she changed	-6
pair she glides	-8
pair she has	-10
pair she says	35
pair she'd like	-13
pair she's got	-9
pair shower 2	-9
pair shower head	-9
pair shuts like	6
pair side door	7
pair since i	8
pair sir finished	-7
pair skip it	6
pair slats on	-8
pair sleeve anchors	22
pair slider track	-8
pair solid now	-9
pair space heater	10
pair square feet	-5
pair stain block	11
pair stays bare	11
pair still no	-5
pair stocks it	-8
pair stop start	8
pair store had	-15
pair stuck down	17
pair supply house	-7
pair sure uh	8
pair swings free	8
pair tae go	-8
pair take that	-7
pair takin that	10
pair tank i	-5
pair tap handle	-8
pair ten minutes	-8
pair texted gus	15
pair thank god	7
pair that bracket	-7
pair that closet	15
pair that comes	-9
pair that covers	-10
pair that door	-12
pair that hole	-18
pair that hose	8
pair that i	6
pair that one	-26
pair that one's	8
pair that room	-7
pair that tile	7
pair that whole	7
pair that window	19
pair that's off	5
pair that's two	-8
pair thats between	7
pair the 2	-7
pair the ac	-12
pair the back	15
pair the baseboard	9
pair the basement	14
pair the bathroom	-7
pair the bay	-5
pair the beam	6
pair the bedroom's	10
pair the bell	-7
pair the bench	16
pair the board	-8
pair the boiler	10
pair the boot	7
pair the box	-10
pair the cartridge	13
pair the closer	9
pair the closet	18
pair the cord	-7
pair the counter	28
pair the dimmer	9
pair the door	13
pair the double	11
pair the drawer	10
pair the dumpster	18
pair the end	-6
pair the entry	15
pair the faucet's	15
pair the feed	6
pair the fill	14
pair the first	-8
pair the floor	-40
pair the four	10
pair the front	6
pair the furnace	-9
pair the gable	-8
pair the grab	-18
pair the grate	15
pair the guy	14
pair the hand	5
pair the handle	10
pair the hatch	-8
pair the heat	-14
pair the heavy	-5
pair the henhouse	11
pair the hinge	-7
pair the hose	-5
pair the house	-9
pair the inside	-8
pair the joist	-7
pair the kit	10
pair the ladder	15
pair the landlord	-12
pair the limewash	29
pair the lock	-9
pair the long	-6
pair the machine	19
pair the maple	-6
pair the mirror	-7
pair the mouse	-10
pair the new	-9
pair the newel	16
pair the nut	-6
pair the oak	-7
pair the old	14
pair the other	-18
pair the outlet	-7
pair the panel	-10
pair the pantry	-8
pair the patch	6
pair the pickup	15
pair the pinch	-5
pair the porch	-9
pair the post	-11
pair the putty	-9
pair the rail	28
pair the ramp	-7
pair the roll	-11
pair the roof	-8
pair the room	17
pair the same	13
pair the sash	10
pair the screen	6
pair the screws	-8
pair the second	-6
pair the sink	25
pair the six	-6
pair the slides	6
pair the spring	21
pair the stair	-7
pair the stairs	-6
pair the step	12
pair the stool	11
pair the stop	-10
pair the store	-6
pair the stove	16
pair the street	9
pair the summer	-7
pair the sweep	-10
pair the switch	-8
pair the table	13
pair the tack	7
pair the tank	-10
pair the three	26
pair the tile	-26
pair the tin	7
pair the toe	6
pair the toilet	6
pair the track	-7
pair the transformer	-8
pair the truck	-10
pair the twenty	5
pair the two	28
pair the upper	-5
pair the usb	12
pair the valve	-9
pair the van	-24
pair the water	17
pair the window	-16
pair the workshop	-13
pair them closet	15
pair them panes	-6
pair there is	-5
pair there too	-15
pair there twenty	8
pair there was	-6
pair there with	17
pair there's a	-21
pair they called	-6
pair they had	-15
pair they only	-7
pair they was	-6
pair they were	-13
pair they're takin	10
pair thirty one	22
pair this morning	-11
pair this time	-10
pair those closet	11
pair thought it	8
pair three bags	9
pair through it	-13
pair through the	-9
pair tight sir	-7
pair tile discontinued	-6
pair tile in	-8
pair tile pattern	-7
pair tiles are	-13
pair time the	-8
pair to a	-6
pair to dig	-6
pair to friday	-10
pair to that	5
pair to the	31
pair together with	6
pair tomorrow when	-7
pair too far	11
pair too wet	-6
pair took care	10
pair took the	6
pair top hanger	12
pair touching the	-5
pair towel bar	11
pair track she	-8
pair trim off	-9
pair truck on	13
pair tub of	12
pair twenty eight	-6
pair twenty four	-11
pair twenty minutes	24
pair twenty times	21
pair two a	-5
pair two clamps	-12
pair two foot	-5
pair two i	12
pair two inches	8
pair two is	6
pair two new	16
pair two of	-24
pair two on	-7
pair two plate	12
pair two says	-7
pair two screws	25
pair two tae	-8
pair two that	-7
pair two the	-12
pair two together	6
pair uh he	8
pair uh the	14
pair um op	12
pair under it	-5
pair under nettie's	13
pair unit two	-10
pair up a	-9
pair up already	12
pair up are	-8
pair up in	12
pair up now	11
pair up on	-19
pair up there	9
pair upper cabinet	-5
pair usb number	15
pair use the	10
pair ut it	-9
pair ut it's	-9
pair ut no	-6
pair ut the	13
pair vacuum breaker	-7
pair vacuumed the	-8
pair valve heads	8
pair valve is	-11
pair valves half	-6
pair vendor wanted	-7
pair wall of	7
pair want the	13
pair wanted a	-7
pair wants a	-15
pair wants it	-8
pair wants the	-6
pair was a	20
pair was bent	13
pair was just	23
pair was nothing	7
pair was on	8
pair was only	6
pair was out	-6
pair washer is	7
pair washer outlet	-6
pair water at	7
pair water board	7
pair way in	-9
pair way to	28
pair we do	-6
pair went in	11
pair were out	-13
pair wet to	-6
pair when it's	-6
pair when they	-10
pair where it	11
pair whole mop	14
pair whole new	-5
pair whole screen	10
pair whole thing	9
pair window goes	9
pair window lock	-6
pair wire nut	28
pair with a	28
pair with both	-5
pair with eight	6
pair with his	12
pair with it	-8
pair with me	13
pair with one	-8
pair with the	42
pair won't hold	-8
pair ya the	6
pair you said	11
pair you'd never	13
pair zone valve	8
part all rank first	14
part all rank tie	-5
part all read done	32
part all read none	-15
part all read plan	-5
part few	-11
part few rank first	-10
part few rank later	-27
part few rank near	-32
part few rank sole	21
part few rank tie	27
part few read done	-20
part few read done+fixed+plan	-6
part few read done+flaw	-5
part few read done+goods	-8
part few read done+plan	6
part few read fixed	8
part few read flaw+plan	-9
part few read goods	-8
part few read goods+plan	-6
part few read none	38
part few read plan	-18
part most	41
part most read done	12
part most read done+flaw	-18
part most read flaw	9
part most read goods	11
part most read plan	24
part none	-46
part none rank first	-20
part none rank later	-7
part none rank near	12
part none rank tie	-44
part none read done	14
part none read done+fixed	9
part none read done+goods	6
part none read fixed	29
part none read flaw	-18
part none read flaw+goods	-11
part none read flaw+plan	-9
part none read goods	-21
part none read goods+plan	-9
part none read none	-25
part none read plan	-44
part some	11
part some rank first	21
part some rank later	7
part some rank near	-21
part some rank tie	9
part some read done+fixed	-6
part some read done+flaw	8
part some read done+plan	-15
part some read flaw	17
part some read flaw+goods	-8
part some read flaw+plan	-7
part some read goods	-19
part some read goods+plan	10
part some read none	28
part some read plan	-14
put false true	-84
put true false	63
put true true	-5
rank first	10
rank first head before	-9
rank first head named	-12
rank first head no	11
rank first head own	14
rank first read done	15
rank first read done+fixed	10
rank first read done+flaw	-12
rank first read done+goods	-11
rank first read fixed	-9
rank first read flaw	15
rank first read flaw+goods	-9
rank first read flaw+plan	-7
rank first read goods	-12
rank first read goods+plan	8
rank first read none	16
rank first read plan	-12
rank later	-33
rank later head before	-6
rank later head named	-10
rank later head no	-21
rank later read done+fixed	-11
rank later read plan	-12
rank near	-17
rank near head no	6
rank near head own	-16
rank near read done	-42
rank near read done+fixed	-16
rank near read done+flaw	7
rank near read fixed	26
rank near read none	21
rank near read plan	-5
rank sole	21
rank sole head before	24
rank sole head named	23
rank sole head no	-21
rank sole head own	7
rank sole read done	33
rank sole read done+fixed	30
rank sole read done+flaw	-22
rank sole read done+goods	-7
rank sole read done+plan	6
rank sole read fixed	15
rank sole read flaw	14
rank sole read flaw+goods	-7
rank sole read flaw+plan	-15
rank sole read goods	-12
rank sole read goods+plan	-11
rank sole read none	12
rank sole read plan	-21
rank tie head before	8
rank tie head no	12
rank tie head own	-14
rank tie read done	24
rank tie read fixed	9
rank tie read flaw	-20
rank tie read goods	-7
rank tie read none	-15
rank tie read plan	-9
rarest 1	33
rarest 1 read done head no	13
rarest 1 read done head own	19
rarest 1 read done+fixed head no	40
rarest 1 read done+fixed head own	19
rarest 1 read done+fixed+plan head no	-6
rarest 1 read done+flaw head own	-10
rarest 1 read done+goods head no	6
rarest 1 read done+plan head no	-9
rarest 1 read done+plan head own	-11
rarest 1 read flaw head before	14
rarest 1 read goods head before	9
rarest 1 read goods head no	-28
rarest 1 read goods head own	13
rarest 1 read goods+plan head no	9
rarest 1 read none head before	-23
rarest 1 read none head no	21
rarest 1 read plan head before	-7
rarest 1 read plan head no	-9
rarest 1 read plan head own	-12
rarest 2	23
rarest 2 read done head own	-8
rarest 2 read done+fixed head no	-42
rarest 2 read done+flaw head no	26
rarest 2 read done+flaw head own	-12
rarest 2 read fixed head no	22
rarest 2 read flaw head before	16
rarest 2 read flaw head no	27
rarest 2 read flaw+goods head no	-7
rarest 2 read flaw+plan head no	-8
rarest 2 read goods head no	-15
rarest 2 read none head own	16
rarest 3	-35
rarest 3 read done head own	11
rarest 3 read fixed head no	9
rarest 3 read flaw head no	-12
rarest 3 read flaw head own	-5
rarest 3 read none head no	-9
rarest 3 read plan head no	-8
rarest 4	-51
rarest 4 read done head before	7
rarest 4 read done head named	24
rarest 4 read done head no	-19
rarest 4 read done head own	-11
rarest 4 read done+fixed head no	-21
rarest 4 read done+flaw head named	-13
rarest 4 read done+plan head no	15
rarest 4 read fixed head before	22
rarest 4 read fixed head no	-8
rarest 4 read flaw head before	-16
rarest 4 read flaw head no	-12
rarest 4 read goods head before	-14
rarest 4 read none head before	30
rarest 4 read none head own	-9
rarest 4 read plan head before	-15
read done flaw	24
read done work	6
read done+fixed flaw	10
read done+flaw flaw	-5
read done+flaw+goods flaw	19
read done+goods flaw	-8
read done+plan flaw	8
read done+plan work	-13
read fixed flaw	41
read flaw work	6
read flaw+goods flaw	-13
read flaw+goods work	-7
read flaw+plan flaw	-20
read flaw+plan work	-6
read goods flaw	-19
read goods work	-21
read none work	32
read plan flaw	-45
read plan work	-13
size long	-30
size middle	8
size short	6
strange 0 few	39
strange 0 none	35
strange 1 few	11
strange 1 most	-14
strange 1 none	-10
strange 1 some	21
strange 2 few	11
strange 2 most	-12
strange 2 none	-25
strange 3 few	-45
strange 3 most	35
strange 3 none	-28
strange 3 some	6
strange 4 few	-34
strange 4 most	38
strange 4 none	-33
strange 4 some	-27
well false false	-16
well false true	-59
well true false	68
well true true	-7
word 1	-32
word 10	-17
word 12	-8
word 14	-11
word 15	-12
word 16	11
word 18	-19
word 2	-11
word 20	5
word 2nd	-15
word 3	5
word 30	-7
word 36	-11
word 4	-13
word 48	-7
word 5	-12
word 6	-19
word 8	5
word a	39
word about	24
word ac	-13
word actually	22
word adhesive	-5
word after	21
word again	-47
word against	21
word ain't	-9
word all	22
word along	20
word already	15
word another	-6
word answer	15
word any	-10
word anyhow	8
word anything	9
word anyways	-8
word anywhere	18
word apt	-12
word arch	-6
word are	21
word arm	9
word around	-12
word arrived	13
word as	59
word asked	-13
word asking	-7
word at	-27
word ause	-7
word baby	-9
word back	7
word backup	8
word bad	-16
word bag	-17
word ball	-8
word bar	-12
word bare	9
word base	-18
word bath	-14
word bathroom	-13
word bay	7
word be	-23
word bead	-8
word beautiful	-5
word bed	6
word bedded	14
word been	-19
word before	6
word behind	7
word believe	-11
word below	-12
word bend	-9
word bent	7
word black	7
word blade	9
word block	-7
word blow	-5
word boat	-6
word boiler	6
word bolt	25
word bone	15
word boot	12
word bother	10
word bottom	8
word bought	7
word box	39
word bracket	-12
word brackets	-5
word brass	-16
word breaker	-8
word bringing	-11
word broke	9
word brother	11
word brought	-14
word brushed	-6
word butter	22
word buy	-20
word by	-14
word bypass	-6
word call	6
word called	-39
word came	30
word camera	11
word can	-16
word can't	23
word cant	7
word cap	-10
word care	10
word carry	-8
word cartridge	-9
word cat	25
word caulk	7
word caulked	-11
word ceiling	-13
word cement	-6
word chain	8
word chair	-13
word changed	13
word changing	-8
word check	-21
word clamp	9
word clamped	6
word clamps	-5
word clean	-8
word clears	7
word closed	17
word closer	-9
word closer's	-10
word closes	-18
word closet	15
word closing	6
word co	-10
word coat	-22
word coats	-6
word coffee	14
word cold	-19
word color	-13
word come	29
word comes	-16
word complete	17
word cooked	11
word counted	-5
word cover	14
word covers	-12
word crack's	9
word cracked	-16
word creased	-8
word cross	13
word crown	-11
word cut	19
word d	-10
word dae	-6
word dead	-10
word deck	-5
word deep	5
word did	38
word didn't	15
word directory	-5
word discontinued	-6
word do	-18
word dock	-8
word doesn't	26
word don't	7
word done	-19
word door	-6
word doorbell	8
word double	-12
word dover	-7
word down	37
word downstairs	11
word drags	-7
word drawer	-21
word dried	-13
word drop	13
word dropped	22
word drops	-7
word dry	33
word dumpster	17
word dutchmans	-5
word edge	-16
word eight	-24
word eighty	-8
word either	-7
word else	-5
word em	5
word end	-7
word even	17
word every	-10
word everything	14
word exam	-6
word except	-10
word extra	-12
word fan	-9
word far	7
word feed	-7
word feet	-12
word fiction	-6
word fifty	-6
word fill	7
word filled	6
word filter	-13
word find	27
word fine	-17
word finger	-8
word finish	28
word finished	-21
word fire	21
word fished	9
word five	-16
word fixed	-7
word flange	14
word flat	12
word flickers	-5
word flight's	9
word float	-8
word floor	-13
word floor's	7
word foam	-7
word foamed	-7
word foot	-31
word footer	-5
word for	-63
word forget	53
word found	26
word four	-40
word free	10
word fresh	12
word friday	-11
word fridge	-8
word front	-16
word full	14
word furnace	-8
word gal	-9
word gallon	-7
word gasket	-10
word gate	-11
word gave	6
word get	-9
word gets	-6
word getting	11
word gfci	6
word glass	-16
word glides	-8
word glued	16
word go	-15
word god	7
word goes	35
word going	41
word golf	-8
word gone	37
word gonna	7
word goo	-7
word good	28
word got	-20
word gotta	-12
word grab	-7
word grabbed	12
word grate	-13
word grille	-11
word grout	-6
word gus	16
word gutter	-6
word guy	7
word guys	12
word half	8
word hand	-12
word handle	-22
word hanger	12
word hanging	-5
word hangs	-7
word hank	13
word happy	25
word hardly	11
word has	-10
word having	10
word he	-20
word he'll	12
word he's	9
word head	21
word hear	33
word heat	-18
word heavy	-5
word held	7
word hen	-19
word henhouse	11
word her	29
word here	-26
word herself	-6
word hey	-5
word high	-6
word him	-5
word himself	-11
word hinge	-12
word hinges	-28
word history	6
word hit	-12
word hold	-13
word holes	-9
word hollow	-6
word home	-5
word hook	-8
word hooked	17
word hooks	-9
word hose	13
word hosed	15
word house	-21
word how	8
word hums	10
word hung	-34
word i	-10
word if	-8
word ill	-7
word inch	-16
word inner	8
word instead	-13
word insulation	10
word into	-8
word iron	-5
word is	-18
word isnt	-12
word it	9
word it'll	9
word it's	-29
word its	6
word itself	10
word jewelry	-6
word joist	-5
word jumped	-12
word just	11
word k	-7
word keep	-8
word key	-9
word kick	8
word kicked	-5
word kind	-9
word kit	-23
word knocked	-8
word know	6
word l	-6
word labeled	-6
word ladder	14
word lady	6
word lamp	-13
word landing	6
word landlord	-9
word landlord's	23
word last	19
word latch	-19
word leak	-7
word leave	16
word left	15
word leg	13
word length	-6
word less	14
word light	-32
word lights	-6
word like	51
word line	-8
word lit	26
word lobby	-7
word longer	-12
word look	-9
word looked	-6
word looking	-17
word loose	20
word lowes	11
word lr	-10
word lumber	-10
word machine	10
word made	13
word man	-14
word maple	-8
word measured	-11
word meeting	-7
word mens	-9
word mesh	27
word mgr	-6
word mill	-6
word min	9
word mind	10
word mine	-6
word minutes	20
word mirror	-6
word moen	-5
word monday	12
word mop	11
word motor	-12
word mouse	6
word moves	-10
word moving	-7
word mr	-11
word mrs	21
word must	-7
word my	26
word myself	12
word nailed	11
word nails	22
word name	-6
word navy's	-6
word need	-31
word needs	-8
word neither	5
word nettie's	26
word never	15
word new	7
word next	-18
word nice	11
word nine	-26
word nineteen	-5
word ninety	-5
word no	70
word nobody	-22
word north	-5
word not	-5
word nothin	15
word nothing	20
word now	90
word number	14
word nut	23
word o	-21
word oak	-13
word of	-25
word off	44
word office	-6
word oh	17
word oil	9
word oiled	-8
word ok	8
word okay	47
word old	-19
word on	-16
word once	-8
word one	9
word ones	11
word only	-28
word open	-11
word opened	-28
word opening	-6
word opens	8
word or	-12
word order	-7
word ordered	-25
word other	-30
word ought	22
word ours	-5
word out	-6
word outlet	-19
word outside	-7
word over	11
word owner	-10
word packed	-10
word pad	9
word paid	-7
word pail	-18
word paint	-18
word painter	15
word pan	-14
word panel	-18
word panes	-13
word pantry	-5
word paper	-12
word park	13
word part	-9
word passing	8
word past	7
word patch	12
word pau	7
word peg	-10
word percent	-5
word pergola	-7
word pest	12
word photocell	-7
word pick	-6
word picked	-8
word piece	17
word pin	-6
word pine	-8
word pipe	-9
word place	-18
word plane	-7
word planed	-8
word plate	-9
word plus	13
word ply	5
word plywood	7
word po	-7
word pocket	-8
word point	-14
word porch	-19
word post	-10
word pre	-6
word primed	-9
word proper	-8
word puddle	-6
word pull	-6
word pulled	-16
word pump	-6
word push	-10
word put	20
word putting	10
word quarter	-10
word quit	29
word quits	6
word r	-13
word rack	-6
word radiator	-5
word rail	-23
word ran	40
word rang	7
word rather	10
word rattles	-10
word reach	-7
word reads	-9
word ready	12
word red	8
word redone	31
word replace	-10
word required	15
word reset	15
word right	9
word rock	6
word rocking	11
word rod	-17
word roll	6
word rolled	40
word rollers	-6
word rolling	15
word roof	-8
word roofer	-11
word room	13
word round	6
word rulers	-5
word running	8
word runs	22
word rusted	-10
word said	11
word same	7
word sanded	-14
word sanding	8
word sash	11
word sat	5
word saturday	-8
word saw	-6
word saying	-6
word says	22
word scratch	25
word screen	-18
word screw	34
word screwed	36
word screws	26
word seal	-13
word seat	-9
word second	-34
word see	11
word seized	-7
word set	-7
word setting	6
word seven	14
word seventeen	-5
word she	19
word she'd	-13
word she's	55
word sheared	12
word sheets	-5
word shelf	-27
word shelves	-5
word shimmed	15
word shop	-19
word short	9
word shot	-9
word should	8
word showed	-12
word shower	-15
word shut	19
word side	-21
word sides	11
word single	-6
word sink	-9
word sister	-6
word sit	-8
word sits	21
word sitting	-22
word sixteen	-14
word size	-8
word skip	6
word slats	-6
word smoke	6
word smooth	6
word soaked	-6
word soldered	-5
word solid	-21
word some	-19
word space	10
word spare	-15
word special	-8
word split	-14
word sprayed	-6
word spring	31
word square	-7
word stain	-10
word stays	-11
word steady	12
word steel	-5
word still	-30
word stock	-18
word stocks	-12
word stop	-11
word stopped	8
word store	-26
word straight	33
word strip	-13
word stripped	-18
word strips	9
word strong	11
word stuck	29
word stuff	17
word summer	-9
word supply	-17
word sure	8
word swapped	6
word sweep	-9
word swings	5
word switch	-17
word systems	11
word table	-13
word take	-11
word takes	-19
word tank	-7
word tannie	19
word tap	5
word tape	6
word taped	-10
word tavo	-13
word ten	-26
word tested	13
word texted	14
word that	-16
word that's	6
word the	-34
word their	-21
word there	-18
word there's	-30
word they	-50
word they're	25
word theyre	14
word thing	46
word thirty	12
word this	-31
word though	11
word thought	30
word thread	13
word three	-25
word through	-13
word thru	9
word thumb	-8
word thursday	-9
word ticket	-6
word tight	57
word till	-8
word tin	6
word to	-7
word together	6
word toggles	11
word tomorrow	-17
word too	14
word took	38
word top	24
word tore	-6
word touching	-5
word towel	-18
word track	-11
word trap	11
word treated	9
word tried	5
word trim	-12
word tripped	19
word truck	17
word tube	28
word tuesday	-7
word turn	36
word turned	24
word turns	17
word twelve	-15
word twenty	18
word twice	-10
word two	26
word uh	27
word um	11
word under	-22
word unit	-12
word unplugged	-5
word up	46
word upper	-8
word upstairs	31
word us	5
word usb	-6
word use	9
word used	5
word ut	-31
word vacuum	-5
word vacuumed	-8
word van	-13
word vendor	-9
word vent	-9
word vestibule	6
word w	-11
word walk	-5
word walked	-8
word wall	-12
word wanted	-9
word wants	-32
word warm	-7
word was	22
word washers	-5
word water	12
word wax	13
word way	7
word we	-42
word we'll	-6
word weatherstrip	-10
word wednesday	-8
word week	-14
word well	29
word were	-14
word wet	-12
word what	-11
word when	-24
word where	15
word white	-6
word why	-10
word window	-16
word wiped	-10
word wire	23
word with	38
word won't	-11
word wood	-17
word works	19
word wrap	-5
word wrench	10
word wrong	5
word x	-28
word ya	19
word yard	-8
word yeah	6
word year	9
word yes	-11
word yesterday	18
word yet	-16
word you	24
word you'd	13
word your	19
work	-18
`;
