export const SAID_SO = `
a b	0	1
a ball	0	2
a bar	0	3
a bit	3	5
a block	1	1
a box	4	2
a brush	0	1
a bucket	2	2
a bus	0	1
a butt joint	1	0
a choice	0	1
a cliff	0	1
a coin	0	1
a condition	0	2
a cool	0	2
a cop	0	2
a crack	2	0
a door	1	1
a drain	1	0
a drop	1	1
a fan	1	2
a flight	0	1
a formal	0	1
a fox	0	1
a free	0	2
a fresh	2	1
a fridge	0	1
a gap	2	0
a great	0	6
a hammer	1	0
a hole	2	3
a joist	1	0
a king	0	2
a lack	0	2
a land	0	1
a lick	1	0
a light	0	3
a lightbulb	0	1
a long	0	5
a major	0	3
a marble	1	0
a matter	0	2
a million	1	3
a nail	1	0
a name	0	1
a nap	0	1
a new	4	6
a note	1	2
a pair	2	3
a pan	1	0
a part	0	3
a piece	1	3
a pipe	1	0
a plan	0	2
a plastic	1	0
a post	0	1
a proper	0	1
a quart	3	0
a quarter	5	2
a quarter turn	1	0
a ramp	1	0
a raven	0	1
a real	0	3
a replacement	1	0
a respectable	0	1
a river	0	2
a roll	3	1
a rose	0	1
a saddle	0	1
a scrap	1	0
a screwdriver	1	0
a series	0	1
a sheet	2	1
a shelf	1	0
a side	0	1
a sign	0	2
a sixteenth	3	0
a small	1	4
a sofa	0	1
a spade	0	1
a speedy	0	1
a splash	1	0
a spot	1	1
a standard	0	1
a star	0	2
a stick	1	1
a stop	0	1
a strong	1	3
a tall	0	1
a tea	0	1
a ten	2	0
a tent	0	1
a third	3	2
a thousand	1	2
a three	2	2
a tiny	0	2
a ton	0	2
a tree	0	3
a tub	1	0
a twelve	1	0
a wax	1	0
a winner	0	1
a wire	1	0
abbie	0	1
able	0	5
abode	0	1
acc	0	1
accent	1	1
access	1	4
accord	0	1
acres	0	2
acrylic	1	0
acting	0	4
addition	1	4
address	0	4
adhesive is	1	0
admit	0	3
admit i	0	1
age	0	5
agent	0	3
ago	1	5
air conditioning	0	1
aisle	0	1
aisle and	0	1
al	0	4
alarm	1	1
albeit	0	1
aliens	0	1
all i	1	3
all round	1	0
all three	2	1
all told	0	1
allies	0	4
ally	0	2
always	0	7
alwaz	0	1
amount	0	5
amounts	0	2
amplified	0	1
and a	7	7
and a box	3	0
and drained	1	0
and drink	0	1
and hauled	2	0
and king	0	1
and made	0	3
and nailed	2	0
and our	1	4
and play	0	2
and reset	1	0
and rule	0	1
and sanded	1	0
and tail	0	1
anger	0	2
angle	2	2
angles	0	2
annual	0	3
answer	0	5
anti	1	3
anyone	1	5
apart	2	3
app	0	3
apple	0	3
applicant	0	1
applicant's	0	1
are a	0	5
are born	0	1
are less	0	1
arm's	1	0
arming	0	1
armor	0	2
arms or	0	1
around	4	7
arrived	2	4
articles	0	2
ash	0	1
ass	0	4
assistance	0	3
assure	0	2
at her	0	3
at hinge	1	0
at ps	0	1
at three	1	0
ate	2	3
ate two	1	0
attack	0	5
aunts	0	1
back and	3	4
back in	3	4
back or	0	1
back panel	1	0
back up	2	2
back's	1	0
backfill	1	0
backlash	0	1
backs	0	1
backset	1	0
backsplash is	2	0
bad luck	0	1
bad taste	0	1
bade	0	2
bake	1	0
baker	0	1
balanced	0	2
balances	1	0
balusters are	1	0
ban	0	3
bandaid	1	0
bandh	0	1
bang	1	0
banking	0	2
banned in	0	1
banns	0	1
barber	0	2
barman	0	2
barrel	0	1
barrier	1	1
based	0	6
basic	0	4
basket	0	3
bat	0	1
batch	1	1
bath door	1	0
batter	0	1
batters	0	1
bay is	0	1
beach	0	3
beans	0	2
bearing	0	2
beat	1	3
beating	0	2
behind	5	5
beijing	0	2
belles	0	1
belly	0	1
belt sand	1	0
ben	0	2
bench	3	3
bet	1	3
better	3	7
between	4	7
bid	0	3
bid her	0	1
bidding	0	1
biggest	0	3
bill	1	5
bill of	0	1
billion	0	4
billions	0	1
bills	0	3
bite	0	3
blanket	0	1
blast	0	2
blazing	0	2
bleed	0	1
blend	1	0
bloke	1	2
blowing	1	2
board	4	4
boards	4	1
boat	1	4
boats	0	1
body	1	6
bold	0	1
book	3	5
book says	2	0
boom	0	1
boot in	1	0
bore	1	1
bored	1	2
bots	0	1
bottle	1	3
bottles	1	3
bottom	5	4
bottom drawer	1	0
bottom i	1	0
bottom tread	1	0
bought	2	5
bout	0	3
bowl	0	2
box it	1	0
boxed	0	1
boxes	5	3
brace	1	1
brake	0	1
brand	0	4
bras	0	1
bread	0	3
break	1	5
break it	0	1
breaks	0	3
bridge	2	3
bright	1	3
bro	1	2
brown ring	1	0
browse	0	1
buff	1	0
build	0	4
building	0	5
built	2	4
built and	1	0
bunch	0	3
burnin	0	1
burning	1	3
bus	1	4
busiest	0	2
business	1	6
butt	1	1
button	1	3
buttons	0	2
bypass	1	0
c	3	5
cab	2	2
cable and	1	0
cable is	1	0
cabs	1	0
cali	0	1
call	5	7
calls	2	4
calorie	0	2
camp	0	3
can call	0	1
can eat	0	2
can glue	1	0
can lie	0	1
can live	0	1
can says	2	0
can see	2	3
cancelled	0	1
cannibals	0	1
cannot	1	5
cannot let	0	1
cant	1	2
cantos	0	1
capped it	1	0
car	1	6
car in	0	1
carb diet	0	1
card	2	4
cards	0	4
career	0	4
caring	0	2
carne	0	1
carol	0	1
carries	0	2
carrying	0	3
cars	0	4
case	2	5
case in	1	0
case is	0	2
cases	0	5
cash	0	3
casket	0	1
cast	0	3
castle	0	3
cat	1	4
cats	0	3
caught	0	4
ceiling i	1	0
cell	1	4
cell phone	0	1
census	0	2
center	3	4
centered	2	1
centers	1	2
centre	1	4
centres	2	1
century	0	6
certain	0	4
cess	0	1
chair	0	3
chalk	1	2
chalked	1	0
chance	0	5
channel	1	3
charge	2	4
charter	0	1
chasing	1	2
chassis	0	1
check	3	5
checked	2	2
checkout	0	1
checks	1	2
cheers	0	2
chemically	0	1
chest	0	3
chicken wings	0	1
chin	0	2
chk	1	0
choice	0	5
choices	0	3
choppa	0	1
circuit court	0	1
circus	0	2
clammy	0	1
class	0	4
class is	0	1
classic	0	3
clause	0	2
clean	3	4
clean it	1	0
clear and	0	1
click	1	5
cliff	0	1
clock	0	4
close	4	5
close it	1	1
closed	3	4
closest	0	2
closet light	1	0
closing	2	2
closures	0	2
cloth	1	2
clothes	1	4
cloths	2	0
cluster	0	1
coach	0	3
coal	0	2
coarse	1	0
coast	0	3
coat in	1	0
cock	2	1
cocktail	0	2
code	2	4
coffee	3	5
coffee's	1	0
coffin	0	1
coke	0	2
cold war	0	1
cold weather	0	1
college	0	5
color	4	4
color match caulk	1	0
color's	1	0
colored	0	1
colors	0	3
colour	1	3
coloured	0	1
colours	0	2
columnist	0	1
comes	4	6
comin	0	2
coming	5	6
communal	0	1
compel	0	2
compound	2	2
con	0	2
conc	1	0
conceit	0	1
concerned	0	3
concert	0	3
concerts	0	2
cond	1	0
condition	0	4
conditions	0	3
conduct	0	4
conduit strapped	1	0
cone	0	2
consistent	0	3
consists	0	3
constables	0	1
constraints	0	1
contact	1	4
contends	0	1
contents	0	1
contract	0	4
contract for	0	1
contractors	0	1
contracts	0	2
contradictory	0	1
contrary	0	2
control	1	5
controller and	0	1
converse	0	1
convert	0	2
cook	0	3
cool	0	5
cooler	1	0
cooling	1	0
coolness	0	1
cop	0	3
cope	1	1
cops	0	3
corner and	1	0
corner to	2	0
cornered	0	1
corners and	1	0
correct	0	4
cos	0	4
couch	0	3
cough	0	2
could eat	0	1
count	1	3
counter	3	4
counter's	1	0
couple	2	5
course	2	6
course the	0	1
court	0	6
courts	0	3
cover	4	5
covers	2	2
cow	0	2
craft	0	3
crank	2	0
crap	0	1
crazy	1	4
create	0	5
creed	0	1
creeps	0	1
cried	0	5
crime and	0	1
crore	0	2
crossed	0	1
crowd	0	4
crowded	0	2
crust	0	1
cryin	0	1
curb is	1	0
cushion	0	1
cust	1	0
cut a	1	1
cut at	2	0
cut in	3	0
cutting	2	4
cysteine	0	1
cystic	0	1
dada	0	1
dance	0	4
dance parties	0	1
danger	0	3
daresay	0	1
darren	0	1
dawn	0	2
decor	0	2
decora	1	0
decrease	0	2
deduct	0	1
deep x	1	0
deficiency	0	1
degree	1	4
degrees	2	3
delegation	0	2
deliver	0	3
delivered	2	4
denmark	0	1
dental	0	1
deny	0	3
dependence	0	1
depot	0	1
dept	0	1
depth	1	1
device	0	3
diamond	0	2
didnt	0	3
difference	0	4
dig a	0	1
digging	1	1
dinner	1	5
direction	0	3
directory	1	0
disc	0	1
discourse	0	2
discrete	0	1
discuss	0	3
discussion	0	2
dish	1	3
dismal	0	1
display	0	2
distance	0	3
doc	0	2
doctor	0	5
doll	0	2
dont	3	5
door came	1	0
door hits	1	0
door i	1	0
doors are	2	0
dormant	0	1
double	2	4
double our	0	1
down i	1	0
drag	1	2
drain i	1	0
drain is	2	0
drained	1	0
drake	0	2
draw	1	3
drawbacks	0	1
drawn	0	3
dream	0	4
dresser	1	1
drilled	3	0
drilling	0	1
drink	0	5
drink in	0	1
drink till	0	1
drinking	1	3
dropped	3	4
dropping	1	2
drought	0	2
drowned	0	2
drug	0	4
dry i	2	0
drying	2	1
drywall's hung	1	0
dubbed	0	1
duck	0	2
duct is	1	0
ducted	1	0
dumb	0	2
duty	1	4
dwayne	0	1
earth	0	3
east end	1	0
eat	0	6
eaters	0	1
eaton	0	1
eats	1	3
ebay	0	1
eclectic	0	1
economist	0	1
economists	0	1
economy is	0	2
eea's	0	1
egg	0	3
egress	2	0
eight	6	4
eighteen	4	0
eighteenth	0	1
eighth	4	1
eighths	5	0
eighty	4	0
eighty two	2	0
electric	1	2
electrically	0	1
electrician's in	1	0
electron	0	1
else	3	6
em's	1	0
emission	0	1
empower	0	1
en masse	0	1
energy	0	4
enough	3	6
entertainment	0	3
entire	0	4
entire life	0	1
entire night	0	1
entreat	0	1
entree	0	2
entrees	0	2
entry i	1	0
epoch	0	1
equipment	0	3
escs	0	1
et al	0	1
eta	1	0
ethic	0	1
event	0	4
events	0	5
ever	2	7
every	5	7
exceeds	0	1
excelled	0	1
exchange	0	3
exclamation	0	1
excuse	0	4
exhaust	1	1
existance	0	1
existing	1	3
expiration	0	2
extend	1	3
extend a	0	1
extended	0	3
extending	0	2
extends	0	2
fabric	0	2
face	3	6
facials	0	1
facing	0	3
fact	0	6
factor	0	3
factors	0	3
factory	2	2
failure	0	3
fair share	0	1
falling	1	3
false	0	3
far and	0	1
farm	0	3
fascism	0	1
fastest	0	2
fat	1	4
fault	2	3
feather	1	0
feed a	0	1
feels	1	3
felt a	0	2
few things	0	1
few times	0	1
fewer	0	2
fiance	0	1
fictional	0	1
fields	0	3
fifteen	3	1
fifty	5	3
fifty a	1	0
fighting	0	4
fill it	1	0
filled	3	4
filled her	0	1
filtered	0	1
fin	1	0
fin set	1	0
final	2	4
finale	0	1
finals	0	2
finest	0	3
finish	5	5
finish and	1	0
finish it	1	1
finished	4	4
finishing	1	0
fired	0	3
first	5	8
fix it	0	1
flame	0	2
flange is	2	0
flash	1	2
flashed	2	0
flatten	1	0
flax	0	2
flew	0	4
flies	0	2
flight	1	3
flipper	0	1
float	2	0
floor bath	1	0
floor drain i	1	0
floor drops	1	0
floor i	2	0
floor in	2	0
florist	1	0
flour	0	3
flow	1	3
flowers	0	4
flu	0	1
fluff	0	1
flush	2	0
foamed	2	0
fone	0	1
font	0	1
food in	0	3
force	1	4
forced	0	4
forces	0	5
forest	0	3
formal	0	3
formed	0	3
formed in	0	1
forty	5	2
forty six	1	0
forty two	3	0
fossil	0	1
fossils	0	1
found a	2	3
four box	1	0
four point	1	0
four walls	1	0
fourteen	4	2
foxes	0	1
frame in	1	0
framed	2	1
freeway	0	1
fren	0	1
fresh	2	4
friend	0	6
friend ran	0	1
friends	0	6
fries	0	3
front	4	5
fronts	2	0
frost	2	1
functionality	0	1
furniture	1	3
fuzz	1	0
g'day	1	0
gal satin	1	0
garage for	1	0
garbage	0	2
gasped	0	1
gauge	3	1
gay	0	3
geese	0	2
geis	0	1
genre	0	2
get her	0	2
get in	0	2
gettin	0	2
getting	4	6
getting a	2	3
giants	0	1
glance	0	1
glass hill	0	1
glass is	1	0
glow	0	1
glue a	1	0
glued	4	1
goal	0	5
goat	0	2
goats	0	1
gone i	1	0
good night	0	1
gotta run	1	0
grab a	2	2
grain	0	2
grand	0	3
grant	0	3
gravel and	1	0
great	0	7
great deal	0	2
grilled	0	2
grind	1	2
grind it	1	0
grip	1	0
grit	1	1
gross	0	2
ground	3	5
ground in	0	2
groups	0	4
grouted	3	0
grow	0	4
grows	0	1
growth	0	5
guide	1	1
guides	0	1
gunk out	0	1
gut	0	1
haha	1	6
hail	1	1
half a box	2	0
half bag	1	0
half box	1	0
handful	0	2
handled	0	2
hands	1	5
hang a	2	0
hanging	3	4
hangs	2	0
happen	1	4
happening	0	3
hardest part	0	1
harnessed	0	1
haste	0	2
hat	0	3
hate	0	4
haters	0	2
hats	0	1
heading	1	1
heads	2	3
heap	0	1
hear the	0	3
heard	0	6
heard her	0	1
heart	0	6
hearts	0	2
heated	0	1
heavy	2	4
heavy heart	0	1
heck	0	1
hee	0	1
heels	0	2
hehe	0	2
height	2	1
height's	1	0
hell	1	4
hen	0	2
hepatic	0	3
her friends	0	1
hesitant	0	1
hide	1	3
hiding	0	3
high school	0	4
higher	2	5
hiking	0	1
hill	0	3
hinge i	1	0
hinge side	3	0
hint	0	3
hire	1	2
history	0	5
ho	0	2
hold	3	5
holder	0	1
holdin	0	1
holding	4	3
holds	1	2
holler	1	0
hollering	1	0
hood duct is	1	0
hooked	2	0
hooks and	1	0
hopping	0	1
horse	0	5
horse and	0	1
horse's	0	2
horses	0	3
host	0	4
hotel	0	4
house	4	6
house and	1	2
housing	1	3
how's	0	1
hub	1	1
hundred	5	4
hunger	0	3
hut	0	2
hvic	0	1
i	8	11
i bring	2	1
i come	2	3
i didnt	0	2
i end	0	1
i hate	0	3
i jus	0	1
i know	2	6
i learned	0	1
i met	0	2
i paint	1	0
i pass	0	1
i pull	1	0
i read	0	1
i sand	1	0
i saw	1	5
i sealed	1	0
i send	1	0
i talked	0	1
i tend	0	1
i walk	0	2
i walked	0	2
i wan	0	1
i wash	1	0
i went	2	5
i wil	0	1
i wish	0	4
iffy	0	1
illest	0	1
in copper	1	0
in sight	0	1
india	0	3
indirect	0	1
induction	1	0
injunction	0	2
innovation	0	2
insect	0	2
inside	3	5
installation	0	1
interact	0	2
interior	0	2
internet	0	3
isnt	1	0
isolation	0	1
jacket	0	1
jam	0	1
james	0	2
jams	1	0
jist	0	3
john	0	3
join	0	5
join hands	0	1
joined	0	4
joining	0	2
joint in	1	0
joist i	1	0
joyce	1	0
juice	0	2
july	1	0
june	1	0
keeps	3	3
kettle	1	2
ki's	0	1
kicks	2	0
kid	3	4
kill	1	5
kill her	0	1
killer	0	2
kissed her	0	1
kitchen cabs	1	0
kitsch	0	1
kitten	0	1
knight	0	2
knights	0	1
knights and	0	1
knot	0	1
knots	1	0
l	3	3
l v	1	0
l v l	1	0
label	1	2
labelled	1	0
labor	0	2
labour	0	3
lack	0	4
lacking	0	2
lacks	0	1
lad	0	2
lads	1	0
lager	0	1
lakh	0	2
laminate and	1	0
land in	0	1
land line	0	1
landing is	2	0
lap	0	2
large	1	6
last one's	1	0
last strip	1	0
later	3	6
later i	0	1
latex	1	0
latter	0	3
lattes	0	2
laughs	0	3
laundering	0	1
laundry sink is	1	0
lay in	1	2
layer	2	0
layers	2	1
lean	2	2
leaping	0	1
least a	0	1
leather	0	2
left a	1	2
left and	3	2
legends	0	1
lemonade	0	1
lend	0	2
lending	0	1
length	2	4
lengths	2	0
lentil	0	1
leper	0	1
let her	0	2
let's	0	5
letter word	0	2
letters	0	4
lettuce	0	1
level	4	6
liao	0	3
life	0	7
lift it	1	0
light i	1	0
lighting	1	2
lightweight	0	1
like a	5	6
likes it	1	0
limit	1	3
line drips	1	0
line i	1	0
lined	1	2
linen	1	0
liner	1	0
liners	1	0
lining	1	1
lion	0	2
lion's	0	1
lions	0	2
lit	0	3
lite	1	0
literally	0	4
litre	1	0
litres	2	0
little hans	0	3
liver	0	4
lobes	0	1
local	0	5
lock side	1	0
log	0	3
log in	0	2
long while	0	1
look out	0	2
looked out	0	2
loot	0	1
loss	0	4
lost a	0	2
lots	0	4
love	1	7
love her	0	1
lover	0	2
lovers	0	3
luck	1	3
luis	1	0
lunge	0	1
lynette	0	1
machine	2	3
mad	0	4
mainly	0	2
maintain eye	0	1
makan	0	1
making	0	6
man's	0	3
management	0	3
manner	0	3
manners	0	2
manual	0	1
many	1	7
marginal	0	1
marked	2	1
market	0	5
marks	0	2
masala	0	1
mass	1	4
mass tag	0	1
mass tick	1	0
masseuse	0	1
mat	3	0
mat's	1	0
match	3	2
match caulk	1	0
matching	1	0
material	0	3
matter	0	5
matters	0	4
may need	0	2
mdash	0	1
me's	0	1
mead	0	1
measure	3	4
measured	4	3
medicine	0	3
meet her	0	1
meet in	0	2
meeting	1	4
men	0	6
mental	0	4
menu	0	5
menus	0	2
mess	0	1
met	0	5
met a	0	2
met her	0	1
metal	3	3
meter back	1	0
metered	1	0
metered it	1	0
metre	2	0
microns	2	0
mid	0	3
millimeter	4	0
millimetres	2	0
million	1	6
millions	0	4
minus	1	1
mistake	0	2
mistakes	0	3
mitered	2	0
mitre	1	0
mix	2	3
mixed	2	2
mmcs	0	1
mode	0	2
model	1	4
modify	0	1
mold on	1	0
money for	0	1
money on	1	2
mood	0	3
more or	0	1
more sticks	1	0
morn	1	0
moro	1	1
morrow	0	3
mortal	0	2
mortar's in	1	0
motions	0	2
mount	1	2
mounted	2	3
movement	0	4
mudroom bench is	1	0
multitude	0	1
muttered	0	1
nailed	3	0
nailing	1	0
name	0	7
namely	0	2
narrow	0	2
nd coat	2	0
net	0	3
never	3	7
night	4	7
night stand	0	1
nineteenth	2	0
nitch	1	0
nite	0	2
nose and	0	1
not our	0	1
notch	2	1
notched	2	0
nothin	0	3
nothing	5	6
noting	0	1
number	4	6
numbers	1	3
nylon	1	0
o'er	0	1
obey	0	1
obsess	0	1
oclock	1	0
odd	1	3
offer	0	5
offset	1	0
oh well	0	1
on site	2	0
one by	2	0
one for	1	1
one two	2	0
onion	0	1
onions	0	2
online	0	4
ons	0	1
open a	1	1
open in	0	1
opened	3	4
opening is	2	0
optics	0	2
order	5	6
ordered	4	5
other fellow	0	1
ought to be	1	1
ourang	0	1
ours	1	2
out a	0	3
outer	0	1
outfit	0	1
owing	0	2
owned	0	3
paced	0	2
pack it	1	0
packed	3	3
packet	2	1
packs	2	1
pact	0	1
paddy	0	1
paid	0	5
pain	0	4
paint it	1	0
painted	3	2
paiseh	0	1
palace	0	4
palate	0	1
pale	0	3
palette	0	1
panel for	1	0
panel i	1	0
panel on	1	0
pantry light	1	0
pants	0	4
paper	4	4
paper and	1	1
paper's	1	0
papers	0	3
parallel	0	1
parents	0	5
paris	0	2
park	0	4
parking	1	2
parties	0	5
parties and	0	2
parties in	0	2
parts	1	4
party	1	6
pass	3	5
passed	3	5
passed through	0	2
past	3	5
patch	4	1
patch i	1	0
pattern	1	3
paused	0	2
paving	1	0
pay tax	0	1
peace	0	5
peddle	0	1
peering	0	1
pen	0	3
pen reds	0	1
pending	0	2
pepper	0	2
per	3	4
periphery	0	1
permit	1	0
pest	0	1
pet	1	3
pete	1	0
phan	0	1
pheebs	0	2
phone	3	5
photo	1	3
physics	0	3
pick her	0	1
pick it	1	1
pick up	3	3
picked	3	3
picked up	3	1
picking	2	2
picture	1	4
pie	1	3
piece	4	5
pies	0	2
pigs	0	2
pill	0	1
pillow	0	2
pint	1	0
pints	0	1
piped	2	0
pissed	0	2
pitched	2	1
pity	0	1
pivotal	0	1
pizzas	0	2
place	4	7
place a	0	3
place and	0	2
place it	0	1
placed	1	4
plain	0	3
plains	0	1
plan	1	5
plane	2	3
plane the	1	0
planet	0	3
planned	0	3
plans	0	4
plastered	0	1
plate says	1	0
platter	0	1
play	0	6
play it	0	1
played	0	5
players	0	4
players and	0	1
plays	0	4
plays a	0	2
plaza	0	1
plot	0	2
plumb	2	0
plumped	0	1
pocket	1	4
pockets	0	3
point	4	6
pointing	1	2
points	1	3
police	0	5
police and	0	2
policy	0	4
polite	0	3
pollo	0	1
polls	0	2
poly is	1	0
popcorn	2	1
pork	0	3
port	0	3
porta	0	1
porta hepatis	0	1
ports	0	1
pose	0	1
position	0	5
pots	0	1
powder	2	1
powder rm	2	0
power plants	0	1
pple	0	1
prayer	0	1
prefix	0	1
press	2	4
pressed	1	1
primes	1	0
prince	0	5
private	0	4
prob	1	1
profile	2	2
profiles	0	1
proof	2	3
prose	0	1
protect our	0	2
protection	0	3
prow	0	1
psp	0	2
pull out	0	1
pulled	4	4
pulled out	1	1
pullin	0	1
pulling	2	3
pullout	1	0
pure	0	3
purpose	1	5
purse	0	1
quarter	6	3
quarter and	2	0
quarter run	1	0
quarters	4	1
quarts	1	0
quasi	0	1
quick	2	4
quinoa	0	1
rabbit	0	1
rabble	0	1
race	0	3
rachel	0	2
radius	1	0
rain	3	4
rained	1	1
rains	1	0
ram	0	1
rampant	0	1
ran a	1	0
ranged	0	1
rank	0	2
ranks	0	1
rap	0	1
rapid	0	2
rapper	0	1
rappin	0	1
raptors	0	1
rated	1	2
raw	1	2
reach	2	5
read	2	6
reading	2	4
ready	4	5
reagents	0	1
really great	0	2
really love	0	1
rebed	1	0
receive a	0	1
received	0	5
recently	0	4
recess	1	3
recession	0	3
recessions	0	1
record	0	5
recut	1	0
reel	0	1
referee	0	1
reflection	0	3
regard	0	2
registered	0	1
regret	0	2
reinforce	0	1
reinforcing	0	1
reins	0	1
relief	1	3
rem	0	1
removal	0	2
reno	1	0
rent	0	2
repair	2	2
repeat	0	3
replacement	2	1
replied	0	4
repull	1	0
reroute	1	0
reserve	0	2
reset	2	0
respectable	0	2
rest	4	5
restart	0	1
return	3	5
returned	1	5
returns	2	2
revealed	0	3
revel	0	1
reversal	0	1
rich	0	4
richard	0	1
rid	0	3
ride	0	4
right	6	8
right and	0	2
rights	0	5
rise is	2	0
rite	0	3
rival	0	2
river	0	5
rivers	0	2
road	2	5
robber	0	1
robbers	0	2
rode	0	3
role	0	4
role of	0	2
rolled	3	3
romance	0	3
roof i	1	0
room i	2	0
roots	1	2
rose	0	4
rough	2	2
rough is	1	0
rough's	1	0
roughed	2	0
roughed in	1	0
round	4	5
rounds	0	2
route	0	3
routes	0	1
rowling	0	1
rows	2	0
rubber	2	2
runner	2	2
running	3	5
s and	0	1
sack	0	2
safety	0	2
sailing	0	1
sake	0	3
salad bar	0	1
sale	0	2
sales	0	4
salt	0	3
same old	0	1
same place	0	1
sanction	0	1
sanctions	0	2
sand in	0	1
sand it	2	0
sanded	3	0
sanding	2	0
sandoz	0	1
santa	0	1
satellite	0	1
sauce	0	4
saw her	0	2
scale	1	4
scarce	0	2
scars	0	1
scene	0	4
scenes	0	1
schedule	0	2
scheme	0	2
schluter	1	0
scored	0	2
scrap	1	1
scraped	3	0
scream	0	2
screwed	4	1
scribe	3	0
scribe a	1	0
scribe it	1	0
script	0	1
sculptor	0	2
sea	0	5
seal's	1	0
sealed	4	0
sealer on	1	0
seals	0	1
seas	0	1
seating	1	3
sec	0	2
second	4	6
seconds	0	4
see daylight	1	0
see light	1	0
seeing	0	5
seeing her	0	1
seek help	0	2
seem	0	5
seem a	0	2
seemed	0	5
seems	0	5
seen	0	6
self	2	5
self leveller	1	0
self leveller and	1	0
selfie	0	1
sell	1	4
selling	0	4
sells	0	2
send	3	5
sending	2	4
sensory	0	1
sent a	0	1
sent's a	1	0
server	0	3
serves	0	4
session	0	3
set	6	6
sets	1	3
setting	1	3
seven	6	5
sexton	0	1
shadow	0	2
shame	0	2
share a	0	1
shaving	1	0
she cried	0	3
she took	0	2
sheet	4	3
sheeting	1	1
sheets	4	2
shelves in	1	0
ship	0	4
ships	0	3
shore	0	3
short	6	5
shorten	0	1
shrieks	0	1
sht	1	0
shudder	0	2
sian	0	1
side i	2	0
sigh	0	1
sight	0	4
silent	0	3
silk	0	2
silly	1	3
sim	0	2
since i	0	3
sing	0	4
single	0	5
singular	0	1
sink center	1	0
sip	0	1
sippin	0	1
sister	2	4
sister's	0	2
sisters	0	4
sit in	1	1
site	2	4
sittin	0	2
sitting	4	5
sixteen	4	1
sixteenth	3	0
sixteenths	4	0
sixth	0	3
sixty four	1	0
sixty two	1	0
sized	0	2
skimmed	1	0
skin	1	4
skipped	0	1
skipper	0	2
skirt	0	1
sky	0	4
slack	0	2
slain	0	2
slap	0	1
slapped	0	1
sleep	1	5
slice	0	2
slices	0	2
slide	3	2
slide a	1	0
slight	0	2
slit	1	0
slum	0	2
slurry	1	0
small	3	6
smaller	0	4
smoked	0	2
snack	0	3
snap	2	1
so close	0	2
so fat	0	1
socks	1	1
soda	0	3
sofa	1	2
sold	1	4
sole	0	2
song	0	5
sophie	0	1
sorry	4	6
sort	1	4
sort it	1	0
soul	0	3
sound	1	5
sounds	1	4
soup	0	3
space	0	5
spacing	1	0
spacious	0	1
spake	0	2
spare	3	2
spasm	0	1
spat	0	1
spawn	0	1
speak	0	5
spec	1	0
speeding	0	1
spend	1	5
spice	1	3
spies	0	1
spins	1	0
spit	0	1
split in	1	0
split line	1	0
sports	0	4
spot	3	4
spotted	1	2
spouted	0	1
sprang	0	2
spray	3	1
sprayed	2	0
spread	0	4
sq m	1	0
squad	0	1
square	4	4
squares	0	1
squaze	0	1
ssef	0	1
stable	0	3
stacked	1	0
staff	0	5
stair wall	1	0
stake	0	2
stance	0	1
stand	2	5
stand in	0	2
standard	0	4
standing	3	4
standpipe is	1	0
stands	2	3
stapled	2	0
star	0	4
staring	0	3
stars	0	4
start	4	6
start s	1	0
starts	2	3
stat reads	1	0
state	0	6
states	0	4
static	2	0
station	1	4
stations	0	2
status	0	4
stay	3	6
stay in	0	3
stayin	0	1
stays	3	2
steak	0	3
steaks	0	1
steal	0	3
steam	1	2
steel	1	3
steep	0	1
steering	0	2
stem cells	0	1
stepped	0	2
stepping	0	2
sterile	0	1
stick	4	4
stick a	2	0
sticker	1	1
still a	0	2
sting	0	1
stock	2	3
stocks	0	2
stole	0	3
stood	0	5
stop	4	6
stop and	1	1
stop drips	1	0
stop i	1	0
stopped	2	4
stopping	2	3
storm	0	3
story	2	5
straight	3	5
strain	0	1
strange	0	4
stranger	0	2
strapped	2	0
straw	0	2
stream	0	3
streamline	0	1
street	2	4
street and	0	1
stretch	1	2
stringers cut	1	0
strip	4	2
strip i	1	0
strip's	1	0
stripes	0	1
strips	0	1
strong	2	5
stronger	0	4
struck	0	3
structural	0	2
structures	0	2
studyin	0	1
studying	0	2
stuff	3	5
stuffing	0	1
style	1	5
styled	0	1
styles	0	1
success	0	4
suds	1	0
sugar	0	3
sum	0	3
summer	0	5
summit	0	2
supper	0	2
supplied	0	2
supply	2	3
support	1	6
supports	0	2
supra	0	2
sure	1	6
surface	0	3
survey	0	1
susan	1	1
swayin	0	1
sweat	1	1
swing	2	2
switched	0	1
synthetic	0	1
system	0	6
systems	0	3
t	2	5
tab	0	1
table	1	6
tables	0	3
tac	0	1
tack	1	0
tacked	1	0
tacked on	1	0
tagged	1	0
takes	2	5
takin	0	1
talked	1	3
talkin	0	2
tampax	0	1
tampon	0	1
tape line	1	0
taped	4	0
tapped	0	1
tapping	0	1
taste	0	4
tasteless	0	1
tata	0	1
tax	0	5
tea	2	4
teapot	0	1
teas	0	1
tease	0	2
tease her	0	1
teleport	0	1
tell her	2	3
telling	1	4
temporary	1	2
ten	6	4
ten to	1	0
tend	0	3
tend to	0	3
tent	0	1
tents	0	1
tenure	0	2
texture	1	1
the brain	0	2
the future	0	4
the inner	0	2
the mac	0	1
the main	2	4
the most	0	6
the near	0	1
the red	2	3
thick	4	3
things	1	7
third	4	5
thirds	1	0
thirty	6	3
this context	0	1
this insect	0	1
this play	0	1
this process	0	1
thousand	2	4
thr	0	1
thread	2	3
threat	0	3
three	7	7
threw	0	4
thrill	0	1
throne	0	2
through	5	7
throughput	0	1
thru	3	1
thumb	1	0
tick	1	0
tide	0	2
tie	1	2
ties	0	2
tight	3	3
tikka	0	1
til	3	3
tiled	1	0
till it's	2	1
timing	0	2
timo	0	1
tin	2	0
tip	2	3
tips	1	2
tire	0	2
title	0	5
tn to	0	1
to ban	0	1
to beat	0	2
to buy a	0	1
toilet i	1	0
toilet is	1	0
toilet set	1	0
tone	0	3
too late	0	1
tool	0	3
tools	0	3
top and	1	0
top's	1	0
tops	2	2
torrents	0	1
touch	4	4
tour	0	3
toward	2	4
tower	1	3
town	1	5
toxins	0	1
trace	1	2
track and	0	1
trade	0	5
traffic	2	3
traffic's	1	0
traffickers	0	1
train	1	5
train out	0	1
train station	0	1
trainer	0	1
traits	0	1
tram	0	1
trampoline	0	1
trampolines	0	1
transcription	0	1
transfer	0	4
transverse	0	1
trash	0	2
travel	0	4
treat	0	4
treats	0	2
treaty	0	1
trees and	0	1
trend	0	2
trendy	0	2
trial	0	4
trick	0	1
tricky	0	1
tried	1	5
tries	0	2
trim at	1	0
trimmed	3	1
trimmed out	1	0
trip	2	4
triplex	1	0
trolls	0	1
troop	0	1
trout	0	1
trunk	1	2
trying	0	6
tryna	0	1
ttyl	1	0
tub i	1	0
tub's out	1	0
tube i	2	0
tube i use	1	0
tuck	0	1
tucked	0	1
tut	0	2
twas	0	2
twelfth	2	1
twelve	5	2
twentieth	1	0
twenty	6	3
twenty four	3	0
twins	0	1
two blocks	0	1
uber	0	1
under	6	7
under a	1	2
undercut	1	0
underfloor	1	0
undergo	0	2
underground	0	1
underlying	0	1
unit's	1	0
uphill	1	0
upper	2	2
ups	1	2
urself	0	1
vacancy	0	2
vacuumed	1	0
value	0	4
vanilla	0	2
varies	0	1
vary	0	2
veggies	0	2
vein	0	2
venue	0	3
via	0	3
vial	0	1
video	0	4
vlv	1	0
voice	0	5
volume	0	3
w	4	4
wages	0	2
waist	0	2
wait	4	6
waiter	0	2
waking	0	1
walks	2	3
wall bows	1	0
wall i	1	0
wall till	1	0
wallet	0	3
walls i	1	0
wan	0	4
wander	0	2
warranty	1	0
wary	0	2
wash	3	2
washed	1	1
washer box is	1	0
waste	2	3
wat	0	3
watch a	0	1
watchers	0	1
waterfall	0	1
waterfront	0	2
wax rink	1	0
wax rinks	1	0
weight	2	4
well i	1	3
well let's	0	1
whack	0	1
wheel	0	2
whence	0	1
whether	1	5
whir	0	1
whole	5	6
whose	0	4
why	2	7
wid	0	2
wid the	0	1
widdy	0	1
width	1	0
wife a	0	1
wil	0	3
wind	1	4
window i	1	0
window is	2	0
window's in	1	0
wine	0	5
winner	0	3
winners	0	2
winter	0	4
wired	2	0
wise	0	3
witch	0	2
won	0	4
wonder	0	4
wont	2	2
word for	0	3
work in	0	3
would	2	8
would consider	0	1
would say	0	1
would take	0	2
wrap	2	2
write	2	5
writing	0	4
written	0	5
wrong	4	5
wrote	1	5
wud	0	1
wwii	0	1
y'all	0	3
zones	0	3
`;
