/** Words that sound like a name of the trade and were said and meant: by crews in annotated notes, and by others in ordinary English, 1 for twice and one more each time it doubles. Written by `tests/learn/misheard.ts count`. */
export const SAID_SO = `
a b	0	1
a u	0	2
abbie	0	1
able	0	5
abode	0	1
acc	0	1
accent	1	1
accept	0	3
accessory	0	1
accident	0	4
accord	0	1
across	3	5
acrylic	1	0
actor	0	2
adding	0	2
addition	1	4
admit	0	3
ads	0	2
after	5	7
after all	0	3
ages	0	1
aging	0	2
ago	1	5
aisle	0	1
al	0	4
alas	0	1
albeit	0	1
alcoholic	0	2
alert	0	2
aliens	0	1
all	7	9
all free	0	1
all her	0	2
all night	1	3
all parts	0	1
all round	1	0
all three	2	1
all told	0	1
alliance	0	1
allies	0	4
ally	0	2
alone	0	5
alt	0	1
alwaz	0	1
amount	0	5
amounts	0	2
amplified	0	1
anger	0	2
angle	2	2
annual	0	3
anti	1	3
anyone	1	5
ap	0	2
apes	0	1
app	0	3
appalling	0	1
appearance	0	3
apply	0	3
applying	0	2
approve	0	3
are bent	1	0
are born	0	1
are easy	0	1
are fighting	0	1
are gone	0	1
are gonna	0	1
are less	0	1
are more	0	3
are on	3	2
are poured	1	0
arid	0	1
arming	0	1
armor	0	2
arms	0	4
arms or	0	1
army	0	3
arrange	0	2
arrival	0	2
arrive	0	3
arrow	0	2
arse	0	1
art	0	5
article	0	2
articles	0	2
arts	0	3
ash	0	1
aside	1	2
ask her	2	2
ass	0	4
assistant	0	1
assure	0	2
assured her	0	1
athletes	0	1
attack in	0	1
attacks	0	3
attention	0	4
aunts	0	1
b	3	5
ba	1	1
back home	0	1
backfill	1	0
background	0	3
backlash	0	1
backorder till	1	0
backs	0	1
backset	1	0
bad	4	6
bad luck	0	1
bad taste	0	1
bade	0	2
bag	5	4
bagged	1	0
bah	0	1
bail	0	2
bake	1	0
baked	0	2
balance	0	3
balanced	0	2
balances	1	0
bald	0	1
ball	2	4
balusters are	1	0
banana	0	2
band	2	3
band in	0	1
bandaid	1	0
banded	1	0
bandh	0	1
bands	0	2
bang	1	0
banking	0	2
banned in	0	1
banns	0	1
bao	0	2
barber	0	2
barely	1	3
barman	0	1
barred	0	1
barrel	0	1
barrier	1	1
based in	0	2
based on	0	5
basic	0	4
basket	0	3
bat	0	1
batch	1	1
batting	0	2
battle	0	4
battles	0	2
beans	0	2
beard	0	2
beat	1	3
beating	0	2
beer is	0	1
begged her	0	1
begging	0	2
behold	0	2
believe	1	6
believer	0	1
bends	1	0
best	0	7
bet	1	3
between her	0	1
bid	0	3
bid her	0	1
bidding	0	1
bids	0	1
big ladder	1	0
biggest	0	3
bike	0	3
bill	0	5
billion	0	4
billions	0	1
binds on	1	0
bird	0	4
bitch	0	4
bite	0	2
bitter	0	2
blacked	0	1
blade is	1	0
blame	0	3
blanket	0	1
blast	0	2
blazing	0	2
bleed	0	1
bleeding	1	0
blend	1	0
blew	2	2
blocks in	0	1
bloke	1	2
blonde	0	3
blood	0	4
blow	0	3
blue eyes	0	1
boar	0	1
boarding	0	1
boat	1	4
boats	0	1
bold	0	1
bond	2	2
boo	0	1
book	3	5
book is	0	1
book says	2	0
boom	0	1
boost	0	2
boot in	1	0
booze	0	1
bore	1	1
bored	1	2
born in	0	3
borrow	0	3
bot	0	1
bots	0	1
bottom drawer	1	0
bottom tread	1	0
bound	0	3
bout	0	3
bowl	0	2
box lid	1	0
boxed	0	1
bra	0	1
brace	1	1
brain	0	3
brake	0	1
brand	0	4
bras	0	1
bread	0	3
breadth	0	1
break	1	5
break it	0	1
breaks	0	3
breast	1	2
breathe	0	2
breeze	0	1
bridal	0	1
bride	0	3
bring	5	6
bro	1	2
bronze ring	0	1
brother	2	4
brow	0	1
brown ring	1	0
brunch	0	2
brushing	0	1
buddies	0	2
buddy	0	2
budget	0	5
buff	1	0
bug	2	0
bug in	1	0
bugis	0	1
build	0	4
buildings	0	3
built	2	4
bulk	0	1
bullets	0	2
bunch	0	3
burger	0	4
burnin	0	1
burning	1	3
bury	0	1
bus	1	4
busiest	0	2
butler	0	3
butt	1	1
butter	1	3
buy any	2	0
bye	2	3
cab	2	2
cabbage	0	1
cabs	1	0
cage	0	1
call her	0	2
call you	0	2
calling	2	4
calm	0	3
calorie	0	2
calories	0	2
cam	1	0
camp	0	3
camping	0	2
can	6	9
can bet	0	1
can call	0	1
can eat	0	2
can glue	1	0
can hang	1	0
can help	0	3
can hit	1	0
can lead	0	1
can lie	0	1
can live	0	1
can meet	0	1
can result	0	1
can say	0	1
can says	2	0
can see	2	3
can use	1	2
canceled	0	1
candle	0	2
canned	0	1
cannibals	0	1
cannot let	0	1
cant	1	2
canto	0	1
cantos	0	1
capacity	0	2
capital	0	5
capitals	0	1
capped	2	0
capped it	1	0
captain	0	3
car	1	6
car in	0	1
car is	0	1
carb	0	1
carb diet	0	1
card	2	4
cared	0	2
career	0	4
careers	0	2
caring	0	1
carne	0	1
carried in	0	1
carried out	0	1
carries	0	2
carry	1	4
carrying	0	3
cars	0	4
carving	0	1
case in	1	0
case is	0	2
cases	0	5
cases in	0	1
cash	0	2
casket	0	1
cast	0	3
castle	0	3
cat	1	4
cats	0	2
caught	0	4
caught in	0	2
caused	0	3
causing	0	2
cavern	0	1
cbi	0	1
ceased	0	1
cell	1	4
cell phone	0	1
cells	0	3
census	0	2
cent	0	2
centered	2	1
centre	1	3
centres	2	1
cents	0	2
centuries	0	2
cess	0	1
chalk	1	2
chalked	1	0
chamber	0	4
chance	0	5
channel	1	3
chanting	0	1
charge	2	4
chart	0	2
charter	0	1
chasing	1	2
chassis	0	1
cheat	0	2
cheating	0	2
cheats	0	1
check her	0	1
checking	0	2
checkout	0	1
cheers	0	1
cheese	0	4
chem	0	2
chess	0	3
chick	0	1
chicken	0	5
chicken wings	0	1
chin	0	2
chinese	0	2
choice	0	5
choices	0	3
choke	0	2
choppa	0	1
cinders	0	1
circuit court	0	1
circular	0	1
circus	0	2
cities	0	4
city	1	6
claim	0	5
clammy	0	1
clan	0	2
clap	0	1
class	0	4
class is	0	1
classes	0	3
classics	0	1
clause	0	2
claw	0	1
clerk	0	3
clever	0	2
cliff	0	1
clock	0	4
clocks	0	2
close eye	0	1
closest	0	2
closet light	1	0
closures	0	2
cloth	1	2
cloths	2	0
cloud	0	2
clouds	0	2
cluster	0	1
coal	0	2
coarse	1	0
coast	0	3
coastal	0	1
cobbler	0	1
cock	2	1
cocktail	0	2
cocktails	0	2
code	2	4
coffin	0	1
coin	0	2
coke	0	2
cold	4	5
cold war	0	1
cold weather	0	1
collar	0	1
collateral	0	2
collected	0	2
collecting	0	1
collection	0	3
collector	0	2
colored	0	1
colors	0	3
colour	1	3
coloured	0	1
colours	0	2
combo	0	2
comic strip	0	1
command	0	3
common	0	5
common bile	0	1
commonsense	0	1
communal	0	1
compel	0	2
compliment	0	1
composed	0	2
compressed	0	1
conc	1	0
conceit	0	1
concerned	0	3
concerns	0	3
concert	0	3
concerts	0	2
conduct	0	4
conducted	0	3
cone	0	2
confirm	0	3
connect	0	2
consists	0	3
constables	0	1
constraints	0	1
container	0	2
contends	0	1
contents	0	1
continues	0	3
contract	0	4
contractors	0	1
contracts	0	2
contradictory	0	1
contrary	0	2
control	1	5
controlled	0	3
cook	0	3
cooks	0	1
coolness	0	1
cop	0	3
cope	1	1
cops	0	3
copy	0	3
core	0	2
cornered	0	1
corny	0	1
corrupt	0	1
cos	0	3
cost	0	5
couch	0	3
cough	0	2
could eat	0	1
could feel	1	0
could see	0	3
council	0	2
countries	0	5
couple	2	5
couples	0	1
course	2	6
courses	1	1
court	0	6
courts	0	3
coverage	0	4
covered	0	4
covering	0	1
cow	0	2
coz	0	3
cozy	0	2
craft	0	2
crafting	0	3
crafts	0	1
cramped	0	1
crap	0	1
crash	0	2
craving	0	1
crawler	0	1
crazy	1	4
creates	0	2
creed	0	1
creep	0	1
creeps	0	1
crib	0	1
cried	0	5
cries	0	2
crime	0	4
crore	0	2
crossed	0	1
crossing	0	2
crowd	0	4
crowded	0	2
crude	0	1
cruise	0	2
crust	0	1
cryin	0	1
crying	0	4
curdy	1	0
current	0	4
cute	0	4
cysteine	0	1
cystic	0	1
dada	0	1
dagger	0	1
dance parties	0	1
dancing	0	4
danger	0	3
darling	0	2
date	0	5
dated	1	2
dating	0	3
daughter	1	5
dawn	0	1
dead body	0	1
deafening	0	1
deal	1	5
decor	0	2
decrease	0	2
deduct	0	1
deep x	1	0
default	0	1
deficiency	0	1
deg	1	0
delegation	0	2
denies	0	2
dental	0	1
dependent	0	3
depot	0	1
dept	0	1
derives	0	1
desire	0	3
determination	0	3
dick	0	3
didnt	0	3
die	0	5
died in	0	3
difference	0	4
digging	1	0
diner	0	1
dint	0	1
directly or	0	1
dis	0	2
disaster	0	2
disc	0	1
discipline	0	2
discourse	0	2
discrete	0	1
discuss	0	3
discussion	0	2
dismal	0	1
displaced	0	1
dispose	0	1
dist	0	1
diverse	0	2
doc	0	2
doctor	0	5
doctors	0	3
doctrine	0	2
don	0	2
donate	0	1
dont	3	4
donuts	1	1
door came	1	0
door hits	1	0
doors are all	1	0
dorm	0	1
dormant	0	1
down low	1	0
down right	1	0
drafted	0	1
drag	1	2
drag on	1	0
drain hose	2	0
drank	0	2
draw	0	3
drawbacks	0	1
drawn	0	3
draws	0	3
dreaming	0	2
dreams	0	4
dress	0	4
dressed	0	4
dresser	1	1
drew	0	3
dried in	1	0
drift	0	2
drilling	0	1
drink in	0	1
drink till	0	1
drinking	1	3
drinks	1	4
driven	0	3
dropping	1	2
drought	0	1
drowned	0	2
drug	0	4
drugs	0	4
drums	1	0
drunk	0	3
drywall below	1	0
dubbed	0	1
duck	0	2
ducks	0	1
ducted	1	0
dum	0	1
dumb	0	2
dumped	0	1
during	0	6
dust	2	3
duty	1	4
e wrong	0	1
ears	0	3
earth	0	3
east end	1	0
easy	1	5
eaten	0	3
eaters	0	1
eatin	0	1
eating	3	5
ebay	0	1
eclectic	0	1
economist	0	1
economists	0	1
economy	0	5
economy is	0	2
effective	0	4
egg	0	3
either	3	5
election	0	3
electric cars	0	1
electrically	0	1
electron	0	1
eliminated	0	1
else	3	6
else is	0	1
emission	0	1
emo	0	1
empower	0	1
en masse	0	1
ended	0	4
ends	2	4
endure	0	2
enemy	0	4
enter	1	3
entered	0	4
entire life	0	1
entire night	0	1
entreat	0	1
entree	0	2
entrees	0	2
epic	0	3
epoch	0	1
equal	0	3
escape	0	3
escs	0	1
et al	0	1
eta	1	0
ethic	0	1
event	0	4
events	0	5
ever met	0	1
ever seen	0	2
eviction	0	1
exceeds	0	1
excelled	0	1
excess	0	1
exchange	0	3
exclamation	0	1
excuse	0	3
exe	0	1
existance	0	1
exit	0	2
expansion	1	2
expense	0	1
expiration	0	2
express	0	3
extending	0	2
extract	0	1
extreme	0	3
eye	0	4
fabric	0	2
fabrics	0	1
facials	0	1
facing	0	3
factions	0	1
factories	0	1
facts	0	4
fail	0	3
failure	0	3
fair	0	4
fair share	0	1
fairies	0	3
fallin	0	1
falling	1	3
false	0	3
fancied	0	2
fancy	0	4
fare	0	2
farm	0	3
farmer	0	1
farmers	0	3
fascism	0	1
fast	0	5
fastest	0	2
father	0	6
fav	0	1
fca	0	2
feathers	0	1
features	0	3
feel	2	6
feel it	2	2
feeling	0	5
feelings	0	4
feels	1	3
fees	0	2
fell	1	5
fen	0	1
ferrets	0	1
fetch	0	2
few	0	6
few things	0	1
few times	0	1
fewer	0	2
fiance	0	1
fictional	0	1
field	0	5
fielder	0	1
fielders	0	1
fight	0	5
fight in	0	1
fighting	0	4
file	2	4
file it	1	0
filed	0	4
filing	0	1
fill	3	3
fill nail	1	0
filled her	0	1
filling	0	3
fills	0	1
film	0	5
filtered	0	1
fin	1	0
fin set	1	0
finale	0	1
find all	0	1
finest	0	3
fire straight	0	1
fired	0	3
fires	0	1
firing	0	2
first place	0	1
first thought	0	1
flag	0	3
flags	0	1
flash	1	2
flatten	1	0
flax	0	2
flesh	0	1
flew	0	4
flies	0	2
flight	1	3
flipper	0	1
flock	0	2
floor drops	1	0
flops	0	1
flour	0	3
flow	1	3
flower	0	3
flowers	0	4
flu	0	1
fluff	0	1
fluid	0	2
flutter	0	1
fly	0	4
flying	0	3
focus	0	4
fold	0	2
following	0	4
fone	0	1
font	0	1
food	1	7
food in	0	3
food is	0	4
foods	0	4
force	1	4
forced	0	4
forces	0	5
forest	0	3
fork	0	1
formal	0	3
formed	0	3
formed in	0	1
forty six	1	0
forum	0	2
fossil	0	1
fossils	0	1
four box	1	0
four more	2	0
four piece	1	0
four point	1	0
four walls	1	0
foxes	0	1
free	2	6
freeway	0	1
fren	0	1
friend	0	6
friend on	0	1
friend ran	0	1
fries	0	3
fronted	0	1
frontiers	0	1
fronts	2	0
frost	2	1
functionality	0	1
fur	1	2
furnished	0	1
furnishings	0	1
futures	0	1
fuzz	1	0
ga	0	1
gain	0	3
gal satin	1	0
gamer	0	1
garbage	0	1
gasped	0	1
gathering	0	3
gay	0	3
gays	0	1
gaze	0	1
gazed	0	1
gears	1	0
geese	0	2
geis	0	1
get all	0	1
get away	0	3
get her	0	2
get in	0	2
get past	1	0
get rid	0	2
get some	0	3
ghost	0	2
giant	0	4
giants	0	1
glad	0	4
glass hill	0	1
glass man	1	0
glass slipper	0	1
glittering	0	1
glow	0	1
goat	0	2
goats	0	1
goin	0	2
good night	0	1
gotta run	1	0
grabbed	1	2
grace	0	1
graft	0	1
grand	0	3
grant	0	3
granted	0	4
granting	0	2
grants	0	2
grate	0	1
grave	0	2
great	0	7
great deal	0	2
great takes	0	1
grew	0	5
grilled	0	2
grind	1	2
grind it	1	0
grinding	0	1
grip	1	0
grips	0	1
grit	1	1
gross	0	2
group	0	5
grouted	3	0
grow	0	4
grown	0	3
grows	0	1
guess	2	4
guides	0	1
gum	0	2
gun	2	4
gunk out	0	1
gut	0	1
habit	0	3
haha	1	5
hail	1	1
half a box	2	0
half bag	1	0
half box	1	0
halter	0	1
ham	1	1
hand	5	6
handed	0	2
handful	0	2
handing	0	1
handsome	0	2
happen	1	4
happened	0	5
happening	0	3
happens	0	3
hard eight	0	1
hard work	0	3
hardest part	0	1
harvest	0	1
haste	0	2
hat	0	3
hated	0	2
haters	0	2
hats	0	1
hauled	2	0
hav	0	2
head	3	6
headed	1	3
heading	1	1
health	0	6
heap	0	1
hear	3	6
heard her	0	1
hearing	0	4
heart	0	6
heart is	0	2
hearted	0	2
hearts	0	2
heavier	0	1
heavy heart	0	1
heck	0	1
heels	0	2
hehe	0	2
hell	1	4
hen	0	2
hepatic	0	3
her face	0	2
her friends	0	1
hers	1	2
hesitant	0	1
hey	4	4
hi	3	3
hide	1	3
hiding	0	3
highway	0	1
hiking	0	1
hill	0	3
hills	0	1
hinge side	3	0
hint	0	2
hire	1	2
hitting	0	1
ho	0	2
hobbies	0	1
holler	1	0
hollering	1	0
holy	0	1
homeless	0	2
homes	0	3
hon	2	0
hood duct is	1	0
hop	0	1
hope	0	6
hopes	0	3
hoping	0	3
hopping	0	1
host	0	4
hotel	0	4
hotter	0	1
hottest	0	1
hounds	0	1
how come	0	2
how is	0	2
hub	1	1
hud	0	1
hug	0	2
hunger	0	3
hurt	0	3
hut	0	2
hvic	0	1
ibm	0	1
iffy	0	1
ignore	0	3
ill	0	3
illest	0	1
in a box	0	1
in case	1	3
in copper	1	0
in her	0	5
in late	0	1
in less	0	1
in line	0	1
in setting	0	1
in sight	0	1
in spite	0	2
indirect	0	1
infections	0	1
inferior	0	1
injunction	0	2
ink	0	1
inner	0	3
inning	0	1
innings	0	1
innovation	0	2
insect	0	2
installation	0	1
instance	0	2
instead	3	5
instructions	0	2
insult	0	1
integration	0	1
interact	0	2
interest	0	5
intro	0	1
iphone	0	1
isnt	1	0
isolation	0	1
issue	0	5
jack it	1	0
jacket	0	1
jam	0	1
jams	1	0
jealousy	0	1
jester	0	1
jist	0	3
join	0	4
join hands	0	1
join in	0	1
joined	0	4
joining	0	2
joy	0	4
joyce	1	0
juice	0	2
july	1	0
june	1	0
jungle	0	1
jus	0	3
juz	0	2
keeping	0	4
key al	0	1
kick	2	3
kidding	1	0
kill her	0	1
killer	0	2
killing	1	3
king	0	6
king said	0	1
kiss her	0	1
kissed	0	3
kissed her	0	1
kisses	0	2
kissing	0	2
kitchen cabs	1	0
kitsch	0	1
kitten	0	1
kneel	0	1
knight	0	2
knights	0	1
knit	0	1
knocked	1	3
knot	0	1
knots	1	0
kuch	0	1
l	3	3
l v	1	0
l v l	1	0
la	0	4
label	1	2
labelled	1	0
labor	0	2
labour	0	2
lack	0	4
lacking	0	2
lacks	0	1
lad	0	2
lads	1	0
lager	0	1
lakh	0	2
lamb	0	3
lame	0	2
land	2	5
land in	0	1
land line	0	1
lap	0	2
larger	0	4
last	5	7
late	2	6
latte	0	1
latter	0	3
lattes	0	2
laughs	0	3
launching	0	2
laundering	0	1
laundry sink is	1	0
law on	0	1
laws	0	4
lay in	1	2
leading	0	4
lean	2	1
leap	0	2
leaping	0	1
leather	0	2
leave her	0	1
leaving	0	4
left	7	7
legends	0	1
lemonade	0	1
lend	0	2
lending	0	1
lengthy	0	1
lentil	0	1
leper	0	1
less	1	6
let her	0	1
lets	0	3
letter	0	5
letter word	0	2
letters	0	4
lettuce	0	1
level wind	0	1
license	0	3
lick	1	1
life is	0	1
lighter	0	2
lightning	0	2
lightweight	0	1
like it	0	3
liked	0	3
likes it	1	0
line drips	1	0
liners	1	0
lining	1	1
lion	0	2
lions	0	2
lipping	1	0
listen	1	5
listened	0	1
lit	0	3
lite	1	0
literally	0	3
litre	1	0
litres	2	0
little hans	0	3
liver	0	4
lobe	0	2
lobes	0	1
local	0	5
lock side	1	0
log in	0	2
long way	0	2
long while	0	1
look	5	7
looked	1	5
looked out	0	2
looking	2	6
looking out	0	1
loosely	0	1
loot	0	1
lor	0	4
lord	1	2
loser	0	1
loss	0	4
lot less	0	1
louder	0	1
love her	0	1
loved her	0	1
lover	0	1
lovers	0	3
loves	0	3
lower	3	4
luck	1	3
luis	1	0
lunge	0	1
lying	0	3
lying in	0	1
lynette	0	1
mac	0	2
machines	0	1
mad	0	4
madam	0	3
made her	0	2
magnet	1	0
maidens	0	1
mainly	0	2
maintain eye	0	1
makan	0	1
make her	0	2
maker	1	3
mall	0	3
malls	0	1
mama	0	3
man	4	7
man called	0	1
manner	0	3
manners	0	2
mantis	0	1
manual	0	1
many things	0	1
map	0	3
marina	0	1
mark	2	3
market	0	5
markets	0	4
marrying	0	3
masala	0	1
mass	1	4
mass tag	0	1
mass tick	1	0
masse	0	1
masseuse	0	1
mat	3	0
mate	1	3
materialize	0	1
math	0	3
matter	0	5
matters	0	4
max	2	1
may	1	7
may need	0	2
may say	0	1
mdash	0	1
mead	0	1
meals	0	3
meaning	0	4
med	0	1
meet her	0	1
meet in	0	2
meet on	0	1
meetings	0	2
melt	0	2
men in	0	1
mental	0	4
menus	0	2
mess	0	1
message	1	4
met her	0	1
met in	0	2
meter back	1	0
metered	1	0
metered it	1	0
metre	2	0
metres	2	0
microns	2	0
mid	0	3
midst	0	2
millimeter	4	0
millimetres	2	0
million	1	6
millions	0	4
min	2	2
mining	0	2
mins	0	2
mint	0	1
minus	1	1
miso	0	1
missed	0	3
mission	0	3
missus	1	0
mistake	0	2
mitered	2	0
mitre	1	0
mod	0	1
mode	0	2
modify	0	1
mold on	1	0
mom	2	4
moment	0	5
moments	0	3
money	1	6
money in	0	2
money on	1	2
month in	0	1
mood	0	3
more cars	0	1
more in	1	2
more or	0	1
more sticks	1	0
more time	0	2
morn	1	0
mornin	0	1
moro	1	1
morrow	0	3
mortal	0	2
motion	0	4
mountain	0	4
much	3	8
mudroom bench is	1	0
multitude	0	1
mushroom	0	2
music	0	5
muttered	0	1
n	3	5
namely	0	2
natural	1	4
needing	0	1
nest in	1	0
net	0	3
nevr	0	1
nibble	0	1
night stand	0	1
nineteen	3	0
nineteenth	2	0
ninety six	1	0
nitch	1	0
nite	0	2
no insulation	2	0
nor	0	5
not mine	1	0
not trying	0	1
not using	0	1
not work	0	1
note	2	4
notice	1	4
noting	0	1
novel	0	5
nursing	0	1
nus	0	1
nyc	0	3
obey	0	1
obsess	0	1
oc	2	0
occasions	0	2
occur	0	3
occurrence	0	1
ocean	0	2
oclock	1	0
odd	1	3
offense	0	3
often	0	6
oh well	0	1
ohms	2	0
older	0	4
on her	1	4
on king	0	1
on site	2	0
on wall	0	1
one board	1	0
one night	0	3
one two	2	0
onion	0	1
onions	0	2
online	0	4
ons	0	1
oot	1	0
open	5	6
opens	1	4
opens in	0	1
operate	0	2
opinion	0	4
opposed	0	3
opposition	0	2
optics	0	2
orgasm	0	1
orphan	0	1
other fellow	0	1
ourang	0	1
ours	1	2
out her	0	2
outer	0	1
outfit	0	1
overran	0	1
owing	0	1
owls	0	1
owned	0	3
owned it	0	1
p	2	5
pace	0	3
paced	0	2
pack	4	3
packet	2	1
packs	2	1
pact	0	1
paid	0	5
pain	0	4
painted	3	2
painting	1	3
paiseh	0	1
pal	0	1
palace	0	4
palate	0	1
pale	0	3
palette	0	1
panic	0	2
pants	0	4
papers in	0	1
parent	0	3
parish	0	1
park	0	4
parking	1	2
parsley	0	1
part	3	6
parties in	0	2
partisan	0	2
party in	0	1
passed	3	5
passes	1	2
past few	0	2
pastry	0	1
patching	1	0
paused	0	2
pay	0	6
pay tax	0	1
paying	0	4
pea	1	0
peace	0	5
peace talks	0	1
peak	1	3
pedicure	0	1
peering	0	1
pen	0	3
pen reds	0	1
pending	0	2
penis	0	2
people	2	8
pepper	0	2
peppers	0	1
per	3	4
perform	0	3
periphery	0	1
pet	1	3
petition	0	2
pets	0	2
phan	0	1
phased	0	1
phrase	0	3
physical	0	4
physics	0	3
pic	0	1
picked	3	3
picking	2	2
pickle	0	1
pictures	1	3
pie	1	3
pies	0	2
pigs	0	2
pile	1	1
pill	0	1
pillow	0	2
pills	0	2
pint	1	0
pints	0	1
piss	0	1
pissed	0	2
pistol	0	2
pitcher	0	2
pitching	0	1
pity	0	1
pivotal	0	1
pizzas	0	2
placed	1	4
places	1	5
placing	0	2
plain	0	3
plains	0	1
plan	1	5
plane	2	3
planet	0	3
planned	0	3
planning	0	3
plans	0	4
plastered	0	1
plate says	1	0
platter	0	1
play	0	6
play it	0	1
players	0	4
plays	0	4
plaza	0	1
pleasant	0	3
please	4	5
please take	0	1
pleased	0	3
plot	0	2
plum	0	1
plumped	0	1
plus	2	3
pockets	0	3
poet	0	3
pointed	0	3
points	1	3
poker	0	1
police	0	4
policies	0	2
policing	0	1
polio	0	1
polishing	0	1
polite	0	3
poll	0	2
pollo	0	1
polls	0	2
poly is	1	0
poor	0	6
poor thing	0	1
pork	0	3
port	0	3
port in	0	1
porta hepatis	0	1
portal	0	2
ports	0	1
pose	0	1
possession	0	2
possessions	0	2
poster	0	2
pot	0	3
pots	0	1
power plants	0	1
powered	0	1
pple	0	1
prawn	0	1
pray	0	2
prayed	0	2
prayer	0	1
prayers	0	2
pre	0	3
precious	0	3
prefer	0	3
prefix	0	1
presence	0	3
pricey	0	1
pricing	0	1
prick	0	1
prime	2	2
prince	0	5
print	2	2
prison	0	3
private	0	4
prob	1	1
probe	1	3
production	0	3
progress	0	4
project	0	3
projects	0	3
prose	0	1
prosecutors	0	2
protection	0	3
protein	0	3
proteins	0	3
prow	0	1
psi	3	0
psus	0	1
pullin	0	1
punk	0	1
pure	0	3
purse	0	1
pushing	0	2
putting	3	4
quality	0	4
quart	4	0
quarter run	1	0
quarter tall	1	0
quarts	1	0
quash	0	1
quasi	0	1
quinoa	0	1
quoting	0	2
r	2	4
rabbit	0	1
rabble	0	1
race	0	3
races	0	2
racing	0	2
radius	1	0
raging	0	1
raid	0	2
rain	3	4
rained	1	1
raining	1	2
rains	1	0
raise	1	3
raise it	1	0
raising	0	3
raking	1	0
rallies	0	1
ram	0	1
ramen	0	2
rampant	0	1
ran out	3	2
rang	1	2
ranged	0	1
rank	0	2
ranks	0	1
rap	0	1
rapid	0	2
rapier	0	1
rapper	0	1
rappin	0	1
rash	0	1
rate	0	4
raw	1	2
ray	0	1
rays	0	2
read	2	5
readiness	0	1
reagents	0	1
really great	0	2
really love	0	1
reason	0	5
rebed	1	0
rebuilt	0	1
receive	0	4
recent	0	4
recess	1	3
recession	0	3
recessions	0	1
recipe	0	1
recut	1	0
red light	0	1
red rose	0	1
redo	2	0
redoes it	1	0
redstone	0	1
reel	0	1
referee	0	1
refers	0	2
reflection	0	3
reflections	0	1
reform	0	5
reformed	0	1
regard	0	2
regarded	0	2
regards	0	1
registered	0	1
registry	0	1
regret	0	2
regular	0	4
regulators	0	2
reinforce	0	1
reins	0	1
relate	0	2
release	0	3
relied	0	2
removed	0	3
reno	1	0
rent	0	2
rented	1	1
replace	2	2
replied	0	4
reply	0	3
repull	1	0
reroute	1	0
reserve	0	2
residence	0	2
resist	0	1
respectable	0	2
restart	0	1
restaurant is	0	3
restore	0	2
restrict	0	1
result	0	5
retire	0	3
returned	1	5
returns	2	2
reveal is	1	0
revel	0	1
reversal	0	1
review	0	4
reviews	0	3
ribbon	0	1
rice	0	3
rich	0	4
rid	0	3
ride	0	4
rides	0	1
riding	0	4
right away	0	2
rise	3	4
rise is	2	0
rising	0	3
rite	0	3
rites	0	1
rival	0	2
river	0	5
rivers	0	2
road	2	4
roads	0	3
robber	0	1
robbers	0	2
robbery	0	1
rockin	0	1
rode	0	3
role	0	4
romance	0	3
rooms	2	3
rooster	0	1
root	0	2
rose	0	4
roughed	2	0
roughed in	1	0
roughly	0	2
rounds	0	2
route	0	3
routes	0	1
routine	0	1
row	3	3
rows	2	0
rub	0	2
rubber band	0	1
ruling	0	2
ryan	0	2
sack	0	2
sacked	0	1
sad	0	4
safe havens	0	1
safely	0	2
safer	0	2
safety	0	2
said prince	0	1
sail	0	2
sailed	0	1
sailing	0	1
saint	0	2
sake	0	3
salad	0	4
sale	0	2
sales	0	4
salt	0	3
salty	0	1
same old	0	1
same place	0	1
sample	2	1
samples	1	2
sanction	0	1
sanctions	0	2
sanding	2	0
satellite	0	1
sauce	0	4
saw her	0	2
sayin	0	1
scandal	0	2
scare	0	2
scarf	0	2
scarlet	0	2
scars	0	1
scene	0	4
scenes	0	1
scheme	0	2
schemes	0	1
school	1	6
schools	0	4
science	0	4
scope	0	2
score	0	3
scored	0	2
scores	0	2
scoring	0	1
scrape	1	0
scraping	1	0
scream	0	2
screamed	0	1
screaming	0	1
scribed	3	0
script	0	1
sculptor	0	2
sea	0	5
seal	3	1
seals	0	1
seas	0	1
seating	0	3
sec	0	2
sect	0	1
sector	0	3
securing	0	2
securities	0	2
security	0	4
see	5	8
see daylight	1	0
see her	0	3
see it	3	3
see light	1	0
seeing	0	5
seeing her	0	1
seek help	0	2
seem	0	5
seemed less	0	1
seeming	0	1
seems	0	5
seen her	0	2
sees	0	2
selection	0	3
self	2	5
selfie	0	1
sell	1	4
seller	0	1
selling	0	4
selling it	0	1
sells	0	2
send back	1	0
send in	0	1
send it	2	2
sending	2	4
senior	0	3
seniors	0	3
sense	0	5
sent	4	5
serve	0	4
serves	0	4
serves up	0	2
service is	0	3
session	0	3
set screw	1	0
sets	1	3
setting	1	3
settings	0	2
settle	0	2
setup	0	1
sexton	0	1
shall	0	6
shame	0	2
share	0	4
shared	0	4
shares	0	3
shaved	1	0
shaving	1	0
she cried	0	3
she knew	0	2
she made	0	2
she takes	0	1
she thinks	0	1
she took	0	2
she wrote	0	2
sheer	0	1
sheeting	1	1
shell	0	2
shells	0	2
shi	0	1
shift	0	4
shimmed	2	0
ship	0	4
ships	0	3
shit	0	5
shock	0	2
shore	0	3
shorten	0	1
shouting	0	1
shouts	0	1
shriek	0	1
shrieks	0	1
shudder	0	2
sian	0	1
sick	0	4
sigh	0	1
sight	0	4
sighted	0	1
signatory	0	1
signing	0	2
silence	0	3
silent	0	3
silk	0	2
silly	1	3
sim	0	2
simply	0	4
sing	0	3
singing	0	4
single	0	5
sings	0	1
singular	0	1
sip	0	1
sippin	0	1
sipping	0	1
sister	2	4
sit	4	4
sit till	1	0
site	2	4
sites	0	2
sits	4	2
sittin	0	2
situation	0	4
six piece	1	0
sixteen	4	1
sixteenths	4	0
sizable	0	1
size	3	4
sized	0	2
skating	0	1
skill	0	3
skills	0	4
skimmed	1	0
skin is	0	1
skipped	0	1
skipper	0	2
skull	0	1
slack	0	2
slain	0	2
slang	0	2
slap	0	1
slapped	0	1
slave	0	2
slaves	0	2
slept	0	3
slice	0	2
slices	0	2
slide	3	2
slight	0	2
slip	1	2
slipper	0	1
slipping	0	1
slit	1	0
slum	0	2
smack	0	1
smallest	0	3
smile	0	4
smiling	0	3
smoked	0	2
snack	0	3
snacks	0	2
snap	2	1
sneakers	0	1
snore	0	1
so close	0	2
so come	0	1
so cut	2	0
so far	1	4
so fast	0	1
so fat	0	1
soap	0	2
soccer	0	2
socks	1	1
soda	0	2
sofa	1	2
solar	0	1
sold	1	4
sole	0	2
solo	0	3
solve	0	3
solve it	0	1
some form	0	1
some way	0	1
son	0	6
sons	0	2
soon	1	6
sophie	0	1
sore	0	1
sort	1	4
sort it	1	0
sorts	0	2
soul	0	3
sounded	0	3
soup	0	3
sour	0	2
source	0	4
sow	0	1
spacing	1	0
spacious	0	1
spake	0	2
spasm	0	1
spat	0	1
spawn	0	1
spec	1	0
species	0	3
spectacles	0	1
speed	0	4
speeds	0	1
speedy	0	2
spell	0	3
spent all	0	1
spice	1	2
spider	0	2
spin	2	2
spin it	1	0
spinal	0	1
spins	1	0
spit	0	1
split line	1	0
sport	0	3
sports	0	4
spot	3	4
spouted	0	1
sprang	0	2
spray hose	1	0
sprayed	2	0
spread	0	4
spun	0	2
squad	0	1
squaze	0	1
ssef	0	1
stable	0	3
stables	0	1
stacked	1	0
staff	0	5
staggering	0	1
stair wall	1	0
stake	0	2
stake in	0	1
stance	0	1
stand	2	5
stand in	0	2
stand on	0	1
standard	0	4
standpipe is	1	0
stands	2	3
stapled	2	0
star	0	4
star in	0	1
stare	0	1
stared	0	2
staring	0	3
staring in	0	1
stars	0	4
start s	1	0
started in	0	1
starts	2	3
starving	0	1
stat reads	1	0
state	0	6
state is	0	2
states	0	4
stating	0	2
statue	0	3
status	0	3
stayed	1	3
stayin	0	1
staying	0	3
steak	0	3
steaks	0	1
steal	0	3
stealing	0	1
steals	0	2
steam	1	2
steel	1	3
steep	0	1
steer	0	1
steering	0	2
stem cells	0	1
stepped	0	2
stepping	0	2
steps is	1	0
sterile	0	1
stern	0	1
sticker	1	1
still	6	7
still on	2	1
still owes	1	0
still see	0	1
still tacky	1	0
sting	0	1
stock	2	3
stocking	0	1
stocks	0	2
stole	0	3
stood	0	5
stood before	0	2
stood in	0	2
stood on	0	1
stood up	0	1
stop drips	1	0
stoppin	0	1
stopping	2	3
stops	2	3
store	4	5
stores	0	3
stories	0	3
story	2	5
strain	0	1
strand	0	1
strange	0	4
stranger	0	2
strangers	0	1
strapped	2	0
straw	0	2
stream	0	3
streamline	0	1
street	2	4
streets	0	4
strewn	0	1
strict	0	2
strip	4	2
stripes	0	1
strips	0	1
stronger	0	4
struck	0	3
students	0	5
study in	0	1
studyin	0	1
studying	0	2
stuffing	0	1
stumble	0	1
style	1	5
styled	0	1
styles	0	1
succeed	0	3
sucked	0	1
sucks	0	2
suds	1	0
sum	0	3
summit	0	2
super cute	0	1
supplied	0	2
support	1	6
supports	0	2
supra	0	2
sure	1	6
sure it	0	2
sustain	0	1
sustained	0	1
swap	4	0
swate	0	1
swayin	0	1
sweat	1	1
sweet	0	5
swings	1	2
swiss	1	0
sword	0	3
t	2	5
ta	1	0
tab	0	1
tac	0	1
tacked	1	0
tacked on	1	0
tackle	0	2
tag	2	3
tail	0	3
takeout	0	1
takin	0	1
taking	1	6
taking her	0	2
tale	0	2
talent	0	2
talents	0	1
talk	3	6
talkin	0	2
talking	2	5
tally	0	1
tampon	0	1
tanned	0	1
tape line	1	0
tapping	0	1
tasks	0	2
tasteless	0	1
tastes	0	2
tax	0	5
tay	0	1
tea	2	4
team	0	5
teapot	0	1
teas	0	1
tease	0	2
tease her	0	1
tech	0	2
teleport	0	1
tell her	2	3
temper	0	1
template	3	0
templated	1	0
temple	0	2
tens	1	1
thank	2	4
thanking	0	1
thanks	1	4
the near	0	1
theirs	0	1
then sand	1	0
then see	0	1
think it	1	4
this comic	0	1
this context	0	1
this cozy	0	1
this entire	0	1
this insect	0	1
this place	0	5
this play	0	1
this process	0	1
this sense	0	1
thither	0	1
thread	2	3
threw	0	4
threw her	0	1
thrill	0	1
thrilling	0	1
throne	0	2
throughput	0	1
throw	2	4
thrown	0	3
throws	1	1
thru	3	1
tick	1	0
tide	0	2
tie	1	2
tied	2	3
ties	0	2
tiff	0	2
tighten	1	0
tikka	0	1
till	6	5
till it	2	2
time	4	9
times	2	6
timing	0	2
timo	0	1
tin	2	0
tiny	0	3
tip	2	3
tips	1	2
tire	0	2
tired	0	5
tires	0	1
title	0	5
titled	0	2
titles	0	2
tix	0	1
toilet set	1	0
token	0	1
told her	2	3
tom	0	1
ton	0	2
tone	0	3
tons	1	3
too bad	0	1
too late	0	1
too red	1	0
took	4	7
tool	0	3
tools	0	3
top hinge	1	0
topic	0	2
tops	2	2
torrents	0	1
toss	0	2
total	2	4
tour	0	3
towel	0	1
tower	1	3
toxic	0	2
toxins	0	1
trace	1	2
trade	0	5
trades	0	1
trading	0	3
traffickers	0	1
trail	0	2
train	1	4
train out	0	1
train station	0	1
trainer	0	1
training	0	4
traitor	0	1
traits	0	1
tram	0	1
trampoline	0	1
trampolines	0	1
transaction	0	1
transactions	0	1
transcription	0	1
translation	0	2
transverse	0	1
tray is	1	0
treat	0	4
treats	0	2
treaty	0	1
trend	0	2
trial	0	4
trick	0	1
tricky	0	1
tried	1	5
tries	0	2
triplex	1	0
trippin	0	1
trolls	0	1
troop	0	1
troops	0	4
trouble	0	4
trout	0	1
true	0	5
trunk	1	2
trunk on	0	1
trust	0	4
truth	0	4
try	2	6
tryna	0	1
ttyl	1	0
tube i use	1	0
tubes	5	0
tucked	0	1
tunnel	0	2
turned on	0	1
turns out	1	3
tut	0	2
twas	0	2
two bag	2	0
two blocks	0	1
two packs	1	0
type	1	6
type in	0	2
types	0	4
uber	0	1
ugh	1	1
undercut	1	0
undergo	0	2
underlying	0	1
unit	4	3
up late	0	1
up like	1	0
uphill	1	0
urself	0	1
using	1	5
ut	0	1
v l	1	0
vacancies	0	2
vain	0	2
valor	0	1
value	0	4
vanilla	0	2
variations	0	1
varies	0	1
variety	0	3
veggies	0	2
vein	0	2
veins	0	1
venture	0	2
venue	0	3
vet	0	2
via	0	3
vial	0	1
vice	0	3
volt	1	0
volts	1	0
von	0	2
w	4	4
wad	0	1
wages	0	2
waist	0	2
waiter	0	2
wake up	0	4
waking	0	1
walk	3	5
walkin	0	1
walking	0	4
walks	2	3
wall bows	1	0
wall tile is	1	0
wall till	1	0
wallet	0	3
wander	0	2
want her	0	1
war	0	5
warning	0	3
warnings	0	1
wary	0	2
wash it	1	0
washer box is	1	0
wasted	0	1
wat	0	3
watch	1	5
watch it	0	1
watched	0	3
watchers	0	1
watches	0	2
watching	0	4
waterfall	0	1
waterfront	0	1
wax rink	1	0
wax rinks	1	0
ways	1	4
wearing	0	3
wedding	0	4
weddings	0	1
wee	1	0
weed	0	3
weigh	0	2
weighed	0	1
weighs	1	0
well	4	7
west	0	4
whack	0	1
whale	0	1
wheel	0	2
whereas	0	2
whether	1	5
while her	0	1
whipping	0	1
whir	0	1
whose	0	4
why	2	7
wid	0	2
widdy	0	1
wider	1	0
wield	0	1
wif	0	2
wife	2	6
wil	0	3
win	0	5
wind	1	4
winds	0	1
wine	0	4
wines	0	1
wing	0	2
wings	0	3
winner	0	3
winners	0	2
winter	0	4
winters	0	1
wipe	0	1
wise	0	2
wished	0	3
wishing	0	2
witch	0	2
witches	0	1
withered	0	1
won	0	4
wonder	0	4
wondered	0	2
wont	2	2
wool	1	1
work	1	8
worked	0	5
worked out	0	1
workout	0	1
world in	0	3
worry	0	4
worrying	0	1
would	2	8
would consider	0	1
would love	0	1
would make	0	2
would say	0	1
would take	0	2
wound	0	2
wrap	2	2
write	2	4
wrote	1	5
wud	0	1
y	0	3
you change	0	1
you shall	0	2
z	0	2
zeal	0	1
zip	1	1
zone	1	3
zones	0	3
`;
