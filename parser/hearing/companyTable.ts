/**
 * Words of 3161 annotated notes: in how many they are said (1 for 6, one more each time it doubles); then, in
 * tenths of a natural logarithm, how much oftener crews say them than others do, how much oftener before a name of the
 * trade than elsewhere, and behind one; then counters beside whose goods they stand, and how much oftener than beside any.
 * # is a number, . a mark or an end. At the end, names of several words: 1 for two or three notes, one more each time it doubles. Written by `tests/learn/company.ts`.
 */
export const COMPANY = `
# 9 40 -1 -3
. 9 40 6 5
about 7 -7 -15 1 drywall5
above 4 16 1 11
abt 2 40 -39 -39
ac 2 31 9 -2
accent 2 12 -39 -39
access 3 11 -7 -39
account 1 -4 -39 -39
across 4 10 -39 -1
actually 2 -21 1 1
add 3 15 -1 -39 lumber7
added 2 14 8 1
adhesive 4 40 -16 -1
adjust 2 20 0 -39
adjusted 2 33 -39 11 doors7
aerator 2 40 -39 -2 plumbing10
aff 2 40 -39 -39
after 6 3 -9 -4 tile10 paint8
afternoon 3 3 -3 -39
again 6 1 -27 -4
against 2 -11 -3 -39
ain't 4 40 -39 7
air 4 8 -12 -8 hvac10
alarm 3 16 -11 -11
alive 1 -16 4 -39
all 8 -5 -10 1
allen 1 11 -39 -39
almond 2 33 8 1
almost 2 -11 -39 4 hardware6
alone 3 -13 -39 5
along 4 2 -5 4 doors5
already 5 7 -8 0
alright 4 11 -9 -39 doors7
also 5 8 -6 2 paint7
altogether 1 17 -39 3
aluminum 2 29 7 -39
am 4 -14 -39 -39
amp 2 35 16 -39 electrical13
amps 2 38 -3 -39
an 7 -2 -1 -9 appliances6
anchor 2 21 -39 -39
anchors 3 40 -39 -3 hardware8
and 9 7 -12 6
angle 3 17 5 -39
another 5 0 -1 -7
anti 2 40 -39 -4
any 4 -16 9 -1
anybody 3 -4 -5 -39
anyhow 3 18 -39 -7
anymore 1 -17 9 3
anyone 2 -18 8 -39
anything 4 -13 -10 -6
anyway 4 -1 -15 3
anywhere 2 -7 0 7
apart 3 6 -39 5 plumbing6
apartment 2 -3 -39 -39
appliance 1 34 3 -39
april 1 5 -39 -39
apron 2 26 1 8
apt 2 32 -1 -39
architrave 1 40 -39 -39
are 7 -7 -22 17 doors6
area 1 -7 -39 -39
aren't 2 40 -39 15
arm 3 7 3 0
around 5 -5 -6 7 paint5
arrived 3 10 -39 16 doors7
arrives 1 12 -39 11
arvo 2 40 -39 -39
as 5 -15 -10 -16 drywall7
asbestos 2 32 -39 -39
aside 2 8 -39 -39
ask 5 1 -39 -7
asked 3 -3 -39 -39
asking 1 -14 -39 -39
at 8 8 -9 6
ate 2 7 -4 -4
attic 5 39 8 -20 electrical7 hvac7 drywall7
away 4 -12 -14 3
ba 2 21 12 -39
baby 1 -27 13 3
back 8 7 -11 -2
backed 3 23 -39 10 hardware7
backer 2 36 -39 -1
backfill 1 40 -39 -39
backing 2 18 1 8
backordered 1 40 11 -39
backs 1 13 -39 11
backsplash 4 40 6 -13 tile13
backwards 3 20 -39 0 plumbing8
bad 4 -6 1 -7
bag 6 22 -4 -17 tile15 concrete16
bagged 1 28 -39 3
bags 5 32 -1 -15 tile14 concrete16 drywall15
bakery 3 30 5 -39
balance 2 12 6 -1
balcony 2 22 17 -39 doors9
ball 3 2 -39 -39 plumbing6
ballast 2 37 -39 -39 electrical12
baluster 1 40 11 -39
balusters 3 40 -39 4 lumber7
band 2 4 -39 -39
banding 1 40 -39 -39
bank 1 -10 4 4
bar 5 18 -4 -8 plumbing6
bare 3 25 17 -8 lumber8
barn 2 15 -3 -39
barrier 2 25 0 -39
base 5 29 -7 -2 concrete7
baseboard 3 40 4 -39
basement 5 28 5 -19
bases 2 26 -39 -39
basin 3 36 1 -6 plumbing10
basket 1 11 -39 1 plumbing10
bath 6 34 9 -18 tile7 plumbing7
bathroom 5 20 12 -21 tile8 drywall5
batt 2 40 -39 5
battery 3 21 -8 5 electrical10
batts 2 40 -39 7
bay 4 24 -17 -39
bays 2 40 -39 8
be 7 -13 -14 -23 tile5
bead 3 40 -39 -3 drywall11
beadboard 2 40 -1 -1
beam 3 24 -1 -39 lumber9
bearing 2 14 1 8
beat 1 -15 -39 11
because 5 -5 -6 4
bed 4 2 -5 -39
bedded 2 40 -39 6
bedroom 5 26 10 -13 doors10 flooring10
bedrooms 3 33 -39 -39 lumber8
been 5 -12 -16 9 drywall6
before 7 11 -10 3 concrete7
behind 6 18 -2 12 appliances11
being 1 -26 -39 13
believe 1 -29 -39 -39
bell 2 0 1 1
belly 3 16 -39 -39
below 4 21 -5 10 tile13
belt 2 10 7 -39
belts 1 19 -39 3
bench 4 31 4 -39
bend 2 10 -39 -39
bent 5 39 -4 10 hardware7
beside 1 8 -39 9
bet 2 -13 -39 -39
better 3 -21 -7 -39
between 4 4 6 6 tile6 lumber7
bib 3 40 -2 -9 plumbing6
bifold 2 40 2 -39 hardware6
big 4 -8 8 -3
bill 1 -12 -39 -39
bin 2 21 7 0
binds 2 38 -39 17 doors7
birch 2 35 -39 -39
birthday 2 -5 -39 -39
bit 4 3 -18 -5 plumbing6
bite 1 -3 -39 -39
bits 2 13 -39 -39
black 5 8 4 4 paint7
blade 3 24 -5 4
blank 2 19 -39 3
bled 3 30 -39 8
bleeding 1 2 -39 3
bless 2 1 -39 1
blew 3 11 -7 6
blind 1 -4 -39 -39
blinds 3 39 -39 -9 doors7
block 4 19 -6 6 lumber5 paint8
blocked 1 16 -39 16
blocker 1 40 -39 -39
blocking 2 22 -39 5
blocks 2 14 -39 -3 lumber8
blow 1 -10 -39 -39
blower 2 40 12 1
blowing 2 12 -39 4
blown 2 12 -39 14
blows 2 9 -39 8
blue 4 6 -3 -7 paint9
board 5 22 -14 -5
board's 1 40 -39 -39
boards 4 40 -39 -12 lumber8
boat 1 -11 4 -39
body 2 -16 -39 1
boiler 3 33 1 -39
bolt 4 32 3 4 hardware6
bolted 3 40 -39 13 lumber9
bolts 4 40 -39 8 plumbing8
bond 2 4 7 0
bonding 2 32 -5 -39
bone 3 14 -8 -39
book 3 -8 -39 -5
bookcase 2 36 10 -39
booked 3 21 -39 -6
boot 3 21 4 -39
boots 2 7 -39 -39
bored 2 10 -39 16
borrowed 1 12 3 -39
boss 5 11 -39 -39
both 6 10 14 -1 doors6
bottle 3 7 8 -8 plumbing6
bottom 6 30 6 -14
bought 4 8 -14 -7
bout 1 6 -39 16
bowed 3 40 -6 13
bowl 3 15 -7 -39
bows 1 27 -39 22
box 7 32 -14 -8
boxed 2 33 -39 11
boxes 5 36 -11 -4 tile11 flooring9
boy 2 -20 -39 -4
boys 3 -10 -39 -5
br 2 40 12 3 doors6
brace 1 15 -39 4
bracket 4 40 -2 2 hardware5
bracket's 1 40 -39 3
brackets 4 40 -39 0 lumber7
brads 2 40 -39 -39
braided 2 40 -39 -39
brand 2 10 -39 -39
brass 4 26 5 3 hardware7
break 2 -13 -39 4
breaker 3 40 -39 7 electrical11
breakers 1 30 -39 8
breakfast 1 -6 9 -39
breast 1 13 3 22 roofing14
brick 3 26 -5 -5 concrete17
bridge 2 0 0 -39
bring 6 10 -9 -11
bringing 2 4 -3 -3
broke 4 7 -15 13
broken 4 13 -6 8
bronze 1 23 11 4
brother 2 -17 -39 -39
brought 3 -7 -39 -39
brown 3 8 0 -3 paint11
brush 3 19 -7 -39 paint11
brushed 2 32 -39 -3
brushes 1 30 3 9
bsmt 2 40 9 -39
bubble 3 25 -39 -8
bubbled 1 40 -39 9
bubbles 1 16 -39 -39
bucket 5 37 -8 -14 concrete6 paint7 drywall14
buckets 2 30 -3 -39
bucks 3 7 -39 -2
bug 1 5 -39 -39
building 2 -6 -39 -39
built 3 12 -39 -4 doors10
bulb 3 31 -39 -7 electrical12
bulbs 2 30 -39 -39
bullnose 2 40 8 4
bumpers 2 40 -39 -1
bundle 2 27 -39 -39
bundles 3 40 -8 -39 lumber9
buried 2 7 -39 7
burn 2 0 -39 -2
burned 3 16 -10 5 electrical6
burner 1 28 3 -39
burnt 1 13 3 3 electrical11
bus 1 -7 -39 -39
busted 3 13 8 10 hardware5
but 7 -6 -17 2
butt 2 6 -39 -39
butter 2 8 7 -39
button 2 11 -39 -6
buttoned 1 35 -39 -39
buy 5 9 -9 -39 paint10
buzzes 2 36 -39 17 electrical11
by 8 13 -9 4 appliances7
bye 2 -12 -39 -39
bypass 2 26 6 10
cab 2 8 11 9
cabinet 5 39 1 -11
cabinet's 1 40 -39 9
cabinets 3 40 -9 -39
cable 4 22 -14 -8 electrical10
cafe 1 17 -39 -39
call 6 -2 -25 -8 tile6
called 4 -7 -6 -12 lumber5
calling 2 -10 -39 -39
calls 2 0 -39 2
cam 1 25 -1 6
came 6 7 -39 14
camera 2 0 -2 -39
can 7 -11 -4 -18
can't 5 40 1 1
cans 3 26 2 -39 paint9
cap 5 30 -7 3 lumber7 hvac8
capped 3 40 -39 2 plumbing5
caps 3 34 -39 -8
car 1 -26 3 -39
carcasses 2 39 -39 1
card 3 1 -7 -39
carpenter 3 27 -39 -39
carpet 4 32 -4 -39 doors7
carriage 2 19 -39 -39
carry 2 -3 -39 -39
carton 2 30 -39 -39
cartridge 3 40 -7 -39 plumbing9
case 3 -9 -2 -2
casing 4 40 -15 -8
cast 2 9 -2 5
cat 2 1 2 -39
catch 3 -3 -39 -7
catches 2 19 -39 11
catching 2 11 -39 8 doors9
caulk 4 40 -6 -13 plumbing5
caulked 3 40 -11 9 lumber6
caulking 1 40 3 -39
cause 5 4 -39 8
cedar 2 30 -39 -2
ceiling 6 40 -5 -14 paint5 drywall10
ceiling's 2 40 -39 -39
cell 2 -3 -39 -39
cellar 3 22 9 -39
cellulose 1 40 -39 3
cement 4 36 -6 -6 concrete10
center 4 16 0 -9
centered 2 34 -39 17
centers 2 28 -39 -39
centimeter 3 40 -10 -10
centre 2 16 -1 -1
centres 2 40 4 -39 lumber7
cfm 3 40 -6 -6 electrical8 hvac14
chain 3 15 -7 11
chair 2 4 -5 -39
chairs 2 17 -39 -39
chalk 1 20 -39 -39
change 4 3 -12 -18
changed 3 4 -39 2 electrical7
channel 3 13 -39 5 doors8
charcoal 2 31 7 -39
charge 3 0 -7 -39
charged 2 10 -39 1
chase 2 8 2 2
check 4 1 -18 -7
checked 3 10 -39 -3
chewed 3 35 -39 9
chimney 3 36 9 -39
chip 4 21 -39 1 doors8
chipped 3 35 -7 4
chirping 1 33 -39 9 electrical11
chirps 2 40 -39 0 electrical10
christmas 2 -11 -39 -39
chrome 2 34 13 -1
chunk 2 22 -39 -39
church 3 2 -39 -39
circuit 2 23 -39 12
cistern 2 40 7 -39
city 2 -14 -39 -39
ckt 2 40 -39 -2
claim 1 2 -39 -39
clamp 3 28 -2 -9 hardware6
clamped 3 40 -7 -39
clamps 4 40 -13 -39 hardware6
clay 1 11 16 3
clean 5 12 -5 -8 concrete6 flooring8
cleaned 4 25 -15 6 plumbing6 hvac6
cleaner 1 16 3 9
clear 4 6 1 -5
clearance 1 16 3 -39
cleared 2 9 1 -39
clears 2 20 -39 9
cleat 2 40 -39 7 lumber12
cleats 2 40 -39 8
clg 2 40 11 -39
click 1 17 13 3
client 3 9 -39 -39
clinic 1 9 -39 -39
clip 2 25 -39 -4
clipped 2 30 -39 10
clips 4 40 -16 -6
close 5 8 -12 -39 doors10
closed 4 12 -39 -3
closer 4 15 -14 -1 hardware7 doors7
closer's 1 40 -39 16
closes 3 27 -39 5 hardware7 doors7
closet 6 36 5 -8
closets 1 25 -39 -39
closing 1 3 -39 -39
cloths 2 40 -39 -39
cm 4 40 -39 -39
co 3 30 -39 11
coat 6 33 -9 -20 concrete13 paint11 drywall9
coated 1 37 4 4
coats 5 40 -4 -39 paint13
cock 2 18 -4 -4
code 3 9 -39 1 hardware7
coffee 4 1 -2 -12
coffee's 1 40 -39 -39
coil 3 39 -39 -8
cold 4 9 -8 -5 plumbing11
collar 2 16 -2 -39
color 5 22 0 4 tile6 paint11
colour 2 15 -39 1
column 2 15 -39 10
come 6 -10 -39 3 concrete6
comes 5 7 -39 7
coming 5 -1 -39 4
company 3 -5 -39 -39
complete 2 2 -39 10
compound 2 23 -39 -4 hardware6
compressor 2 38 -39 8
concrete 4 31 8 -13 concrete11
condensate 2 40 -1 -1 plumbing9
conduit 2 34 8 1
confirm 1 7 -39 -39
connected 1 8 1 1
construction 2 14 -2 -39
contact 2 2 2 2
contractor 2 26 -39 -39
control 2 -8 -3 -39
conversion 2 34 15 -39
cooktop 2 40 14 -39
cooler 1 16 3 -39
coped 1 40 -39 3
copper 3 27 13 -39
cord 3 32 -3 -3 electrical7 doors7
cords 1 28 -39 -39
core 2 20 -39 9
corner 6 31 -4 -8 appliances9
corners 3 30 -39 -9
cornice 2 40 -39 -39
corridor 2 22 -2 -39
could 4 -18 -39 -39
couldn't 2 40 -39 -39
count 3 -1 -39 -5
counted 2 23 -3 -39
counter 4 30 3 -18
countertop 3 40 4 -7
couple 3 -9 -6 -39
couplings 2 40 -39 -39 plumbing10
course 3 -17 -39 -7 concrete14
courses 2 23 -39 -39
cousin 1 -3 -39 -39
cove 2 26 -1 -39
cover 5 17 -39 2 electrical10
covered 2 5 -39 15
covers 3 26 -39 4
crack 5 24 -19 -4 doors6 concrete5
cracked 5 39 2 14 tile7
cracks 1 18 -39 -39
crawl 2 17 -3 -39
credit 2 3 -39 -3 doors9
crew 2 5 -39 -5
crooked 3 31 -3 9
cross 2 -2 -39 7
crossed 2 9 -39 12
crown 4 29 -3 -16 doors6
crown's 2 40 -39 -39
crowned 1 27 -39 11
crushed 3 23 7 9 hvac12
ctr 2 40 -39 1
cup 2 2 -39 -3
cupboard 2 32 17 12 doors8
cupped 2 40 -39 15
curb 3 37 6 -13
cure 2 11 -39 -3
cured 2 19 -39 12
curtain 1 11 4 -39
cust 1 40 -39 -39
customer 3 23 -5 -39 electrical6
cut 7 21 -15 0 lumber6
cutout 2 40 -39 11
cuts 2 17 -39 3
cutting 3 15 -39 -39
dale 2 15 -39 -39
damp 3 34 4 -39
damper 3 40 3 -1 hardware5
danny 1 -8 -39 -39
dark 2 -3 -3 3
dave 1 -2 -39 -39
day 6 -1 -19 -11 tile6 concrete8
daylight 3 25 -9 -39
days 5 4 -39 -39 concrete11 paint6
dead 5 1 -3 10 electrical11
deadbolt 2 40 5 -2
dealer 1 6 -39 -39
decide 1 -5 -39 -39
deck 5 27 3 -6 lumber8
decking 1 40 -39 -39
decora 1 40 4 -39
deep 5 18 -39 -22
deg 1 40 9 -39
degrees 3 21 -5 -11
dehumidifier 1 40 3 -39
delivered 2 15 -39 9
delivery 3 14 -39 5
demo 1 21 -39 -39
den 4 35 10 -39 doors10
dent 2 26 -39 -39
dental 1 17 -39 -39
dented 1 35 13 9
dentist 2 14 -39 -39
desk 3 8 3 -8
detector 1 23 3 -39
dia 1 34 -39 -39
dialed 2 30 -39 -39
diamond 1 5 3 -39
did 5 -17 -14 -11
didn't 4 40 -3 1
different 3 -8 13 -39 electrical8
dig 2 6 1 -39
dime 2 18 -39 -39
dimmer 2 40 -6 -39 electrical14
ding 2 20 -39 -39
dinged 2 40 1 1
dining 4 33 -6 -39 lumber10
dinner 2 -16 17 -39
dip 1 15 -39 3
dips 1 34 -39 11
disconnect 1 28 9 -39
dish 2 14 -39 -39
dishwasher 4 40 10 -16 electrical6 plumbing5
dishwasher's 1 40 -39 -39
disposal 3 31 -9 -39 plumbing9
do 6 -17 -10 -28 tile6
does 4 -12 -14 7
doesn't 4 40 8 12
dog 4 -1 -39 -6
doing 3 -22 -2 -9
dollar 1 2 -39 -39
dollars 1 -8 -39 -39
don't 6 40 -3 -2
done 6 6 -13 7 concrete5
dont 3 33 -1 -1
door 7 22 -3 -5 hardware7 flooring7
door's 4 40 -3 -9
doorbell 1 14 3 -39
doors 5 28 -23 0 hardware6 doors8
doorway 2 27 -2 -39
double 3 7 6 -10
dowel 2 40 -1 -39
down 7 5 -19 5 landscape6
downspout 2 40 -5 -39
downstairs 2 4 8 -39 plumbing7
dozen 3 15 13 -39 hardware6
dr 3 -10 10 2 hardware6
draft 2 18 -39 0
drag 1 1 -39 18
dragging 2 18 -39 1 doors8
drags 3 40 -9 18 doors10
drain 6 40 3 -4 plumbing11
drain's 2 40 -39 -39
drained 2 28 -39 1
drains 2 35 -39 -3
drawer 5 35 -39 -4 appliances10 hardware7
drawers 2 27 -39 -3
drawing 3 18 -39 4
dribbles 1 37 -39 18 plumbing12
dried 3 28 -6 -6
dries 2 35 -39 11
drill 3 24 -11 -5
drilled 4 40 -39 -1 hardware5
drip 4 37 -15 -5
dripping 2 29 7 3 plumbing9
drips 4 40 -39 12 tile6 plumbing13
drive 2 -9 -39 -39
driver 3 7 -39 -39
driveway 2 23 -4 -39
driving 1 -9 -39 -39
drop 5 11 -14 -5
dropped 3 11 -39 8
dropping 1 8 -39 3
drops 3 26 -39 11
drove 2 6 -39 -1 hardware8
drum 2 22 -5 -39
dry 6 31 -15 0 concrete7 paint6 drywall7
dryer 4 39 -1 -16 electrical5 hvac8
drying 2 35 -3 -3
drywall 4 40 -6 -10 electrical5 paint6
duct 4 40 -9 3 electrical7 hvac13
duct's 2 40 -39 6
ducted 1 40 -39 9
due 3 7 -39 0
dug 3 25 -39 -2
dumping 1 21 -39 -39
dumps 2 29 -39 17
dumpster 2 26 -2 -39
duplex 2 40 -39 -39
dust 3 13 -39 -7
dw 2 40 16 -39
ea 1 40 4 11
each 5 5 8 5
ear 2 5 -39 -39
earliest 2 27 -39 -39
early 2 -5 -39 -39
eased 2 38 8 1
east 2 5 17 -39
easy 1 -22 11 -39
eat 2 -17 -39 -39
eating 2 -2 -1 15
edge 5 31 -13 -4 paint5
edges 2 31 -39 -39
eggshell 3 40 -39 -9 paint10
egress 2 40 -5 -39
eh 2 2 -39 8
eight 7 28 -2 -3
eighteen 5 40 -3 2
eighth 5 40 -15 -21 hardware5
eighths 6 40 -1 -39
eighty 4 40 -39 -10
either 3 -7 8 -39
elbow 3 30 -10 -10
elbows 2 34 -39 -39 plumbing6 hvac11
elec 1 40 3 -39
electric 2 12 5 -39
electrical 1 14 -39 -39
electrician 5 40 -4 -19 electrical15
electrician's 2 40 -39 -39 electrical10
element 1 15 -39 4
elevator 1 2 11 -39
eleven 6 40 4 -5
elm 1 28 4 -39
else 3 -13 -39 -39 lumber6
em 6 17 -19 -6
empty 3 9 -3 -9
enamel 2 40 -39 4
end 6 13 -3 -3 roofing6
ended 1 0 -39 4
ends 3 13 -9 -2 lumber7
engineer 2 18 -39 -39
enough 4 -7 -1 -3 tile7 concrete7
ensuite 2 40 8 -39
entry 4 27 10 -7 tile12
epoxied 1 40 -39 -39
epoxy 4 40 3 -6
escutcheon 1 40 3 -39 plumbing9
even 4 -17 -12 -5
evening 2 -6 -39 -39
ever 3 -20 -7 -39
every 5 2 9 2
everybody 2 -19 -39 -39
everything 4 -13 -39 0
everything's 1 40 -39 -39
everywhere 2 3 -4 -4
exam 1 10 3 -39
except 4 8 -16 3 appliances8 doors6
exhaust 3 35 8 -39 hvac12
exit 2 15 -39 -39
expansion 3 38 4 -39
ext 1 40 9 -39
extender 2 40 -39 -1
extenders 1 40 -39 3
extension 3 30 -9 -9
exterior 2 32 12 3
extra 4 11 8 -2 paint8
eye 2 -9 -39 -39
face 4 -4 -3 4
factory 2 12 -39 -39
failed 1 2 -39 -39
fall 3 2 -39 -4
falls 2 11 -39 9
family 3 -9 -39 -39
fan 5 28 3 -39 electrical8 hvac6
fan's 2 40 -39 -1
far 4 -2 3 -39
fascia 3 40 1 1
fast 2 -12 -39 -39
fastened 1 31 -39 -39
fat 1 -8 -39 -39
faucet 4 40 3 -3 plumbing10
faucet's 2 40 -3 -39 plumbing8
fault 2 -6 -2 -2
feed 2 6 2 2 electrical9
feel 3 -20 -39 -39
feet 5 17 -19 -19 roofing8
fell 3 4 -39 15 doors5
fella 3 11 -39 13
felt 2 -5 -4 -39
fence 3 21 -10 5 lumber8
fiber 1 23 13 -39
fifteen 4 26 -10 -6
fifth 2 12 -39 -39
fifty 5 34 -9 -1 hvac5
figure 3 1 -10 -10
file 3 6 -39 -39 hardware8
filed 2 15 1 -39 hardware7
fill 4 18 -10 -10
filled 4 23 -11 -11 concrete7 paint8
filler 4 40 -10 -7 appliances12
fills 1 23 -39 11
filter 4 40 4 -9 electrical6
filters 3 40 -39 0
final 3 9 -39 -39
finally 3 1 0 0
find 4 -14 -39 -39
fine 5 0 -24 1
finger 3 11 -2 -39
finish 6 20 -8 -5 tile6 paint5
finished 4 13 -1 1 plumbing5 lumber5
fire 4 2 -4 -10 electrical7 concrete10
fireplace 3 30 -8 -39
first 6 1 -6 1 paint9 drywall10
fish 1 -10 -39 -39
fished 1 30 -39 4
fit 3 9 -11 -39
fits 2 17 -39 3 lumber7
fitted 3 39 -8 13 plumbing6
fitting 2 23 -39 4
five 7 20 -3 -7
fix 4 9 -39 -8
fixed 4 19 -9 2 doors6
fixture 1 36 9 -39
flame 1 15 -39 -39
flange 4 40 2 2 plumbing10
flap 2 28 6 10
flapper 1 40 -39 -39
flash 2 11 -39 7
flashed 2 35 -2 -39
flashing 4 40 -13 8
flashlight 1 17 -39 -39
flat 5 31 -9 -1 paint6
flex 3 40 1 -5 hvac10
flexible 2 27 11 0
flight 1 -5 -39 -39
flip 3 19 0 -39
flipped 2 27 -39 -39
float 3 30 -39 -2 electrical5
flood 3 27 -39 -39
floor 7 27 0 -9 tile10
floor's 3 40 -10 -10
flooring 1 38 -39 -39
flow 2 14 5 -39 plumbing8
flower 1 3 -39 -39
flr 2 40 7 -39
flue 3 40 -39 4 plumbing7
flush 4 32 -10 -6
flushed 2 26 -39 0
fly 1 -10 4 -39
foam 4 40 0 -18
foamed 2 40 -39 -1
foil 3 40 -39 -1
foot 6 31 -14 -21 lumber6 roofing6
footer 3 40 -39 -39
footers 2 40 -39 -39
footing 2 38 -39 -39
footings 2 40 -39 1
for 8 -5 -7 7
forget 3 -9 -2 -9
forgot 2 -6 -39 -39
form 1 -1 -39 1
forty 6 40 -17 -7
found 4 -4 -17 -7
four 7 25 3 -7
fourteen 5 40 1 -3 drywall7
fourth 3 14 2 -39
foyer 2 40 12 -39
frame 4 29 -3 -3 hardware5 doors5
framed 2 26 -5 11
frames 2 33 -39 -39
framing 2 35 -39 -39
frayed 1 36 -39 15
free 3 -2 -11 -39
freed 2 29 -39 -5 plumbing9
freezer 1 19 9 -39
fresh 3 5 12 -39
fri 5 40 -9 2
friday 6 31 -23 -3 concrete9
fridge 5 39 10 -39 appliances12 electrical6
from 7 0 -6 2
front 6 16 4 -15 flooring5 roofing9
fronts 2 37 -39 -39
frost 2 25 4 -39
froze 2 22 -39 15
ft 6 40 -4 -39 electrical7 roofing6
full 5 8 -20 1 hvac6 concrete8
furnace 3 37 1 -39 plumbing6
furniture 1 8 -39 -39
gable 3 40 8 -6
gal 4 31 8 -39 tile6 paint15
gallon 5 40 -11 -39 concrete6 paint17
gallons 4 39 -39 -39 paint14
gang 2 9 9 -39 electrical10
gap 5 40 -10 -1
gaps 2 40 -39 -3
garage 5 32 7 -18
garbage 1 3 13 -39
garden 2 9 14 -39
gary 3 16 -39 -9
gas 4 14 0 -4 appliances13 hvac9
gasket 3 40 -39 8 plumbing11
gate 4 22 -2 -39 hardware7
gauge 3 40 1 -5 plumbing7
gave 4 -3 -39 -13 hardware6
get 7 -9 -21 -6
gets 4 4 -12 6
getting 3 -12 -5 -1
gfci 2 40 -39 -39
gfi 1 40 1 -39
give 4 -19 -39 -6
gives 1 -6 -39 -39
glass 5 21 -3 -6 doors9
glides 1 40 -39 -39
gloss 2 35 -39 -3
glue 5 40 -15 -7 flooring9
glue's 2 40 -39 1
glued 5 40 -24 2 lumber7 flooring6
go 7 -10 -29 -5
god 3 -22 -39 -7
goes 6 14 -39 13 tile7
going 5 -16 -21 0
gone 5 8 -39 10
gonna 5 -13 -3 -5 tile10
good 6 -7 -14 -10
got 8 1 -17 5
gotta 6 5 0 2
grab 4 15 -39 -3
grade 2 10 13 2 plumbing7
grain 1 19 -39 -39
granite 2 33 10 -39
gravel 3 39 -39 -6
gray 4 22 6 -7 paint9
grease 3 27 -1 -8 hvac11
green 3 7 2 -11
grey 1 13 -39 -39
grid 2 27 -39 0
grille 2 40 -39 -3
grind 2 24 -39 0
grinder 2 34 -1 -39
grit 2 40 1 -39
ground 4 12 -3 -5 electrical7
grout 5 40 -16 -12 tile11
grouted 2 40 -5 9
guard 2 2 -4 9
guess 3 -17 -5 -39
guest 3 14 3 -6
guide 2 14 -39 -4
guillotine 1 32 -39 -39
gun 3 -9 8 -39
gus 1 40 4 -39
gutter 3 31 -3 -39 roofing14
gutters 1 31 -39 -39
guy 5 -2 -10 2 appliances6 hvac7
guy's 2 40 7 7
guys 4 -9 -10 3
gym 2 11 12 -2
ha 3 -3 -39 1
had 6 -3 -21 8
haha 1 36 -39 -39
hair 4 3 -1 -14
hairline 3 40 -39 -6
half 8 28 -5 -14 concrete6
halfway 2 14 -39 -2 doors9
hall 6 31 10 -12 tile7
hallway 3 27 10 -39
hammer 2 17 -4 -39
hand 5 5 4 -39 doors5 paint8
handed 2 14 -39 12
handle 4 8 -15 10
handles 2 24 -39 6
handrail 4 40 0 0 lumber10
handrail's 2 40 -39 1
hands 1 -19 -39 -39
hang 5 12 -2 -7 doors5 drywall6
hanger 2 38 -5 9 hardware6
hangers 3 40 -5 -39
hanging 4 13 -7 7 hardware5 electrical6
hangs 3 31 -5 12
happy 4 -5 -39 -14
hard 4 -2 -1 -3 plumbing5 drywall10
hardware 3 27 -39 -2 hardware8
hardwood 2 38 0 -39
has 7 4 -19 13
hasn't 2 40 -39 14 plumbing8
hatch 4 28 0 -39 hardware6
hauled 2 31 -39 -39
have 7 -10 -13 -3 tile6
haven't 2 40 -39 5
having 1 -21 -39 -39
hazard 1 20 -39 -39
haze 2 35 -39 -39
he 6 -18 -13 -4
he'd 2 40 -39 -39
he'll 4 40 2 0
he's 5 40 -39 1 tile6
head 4 -3 3 3 hvac7
header 3 40 8 -39
heads 3 6 -39 8
hear 3 -16 -39 -39
hearth 3 40 11 -10
heat 4 19 -2 -10
heater 4 40 4 -4 electrical6 plumbing7
heater's 1 40 -39 4
heating 2 29 -2 -39
heavy 2 5 2 2 hardware7
height 3 25 2 9
held 4 16 -15 3 hvac8
hell 1 -27 -39 -39
hello 3 -14 -39 -39
help 2 -29 -1 -39
hendersons 2 40 -39 -39
her 6 -10 4 -16
here 5 -21 -39 -7 tile5
here's 2 40 -39 -1
herringbone 2 40 -39 -39
hers 1 8 3 -39
herself 2 2 -3 8
hex 1 31 -39 3
hey 4 -21 -39 -14
hi 4 -10 -39 -39
hidden 2 10 -39 -2
hide 2 -5 -39 -39
high 5 7 -7 -14
higher 2 5 -39 -39
him 5 -20 -9 -21 hvac6
himself 2 -12 -39 -39
hinge 5 40 12 -12 hardware5 doors6
hinges 4 40 -39 -10 hardware6 doors8
hip 2 10 -39 -39
his 5 -18 9 -13
hit 4 -1 -6 -1 paint5
hits 3 21 -5 16 appliances10 doors5
ho 1 -3 -39 -39
hob 2 40 9 -2
hold 4 -7 -15 -4
holder 2 33 -2 -2
holding 4 13 -1 5
holds 3 18 -39 5
hole 6 26 -26 5 appliances7
hole's 2 40 -39 -2
holes 5 32 -19 6 concrete8
holiday 1 5 -39 3
hollow 3 22 -9 2 tile13 plumbing5
home 4 -13 -8 -15 hardware5
homeowner 3 40 -9 -9
hon 1 8 -39 9
hood 4 29 6 -17 hvac15
hook 3 15 -2 -2 hardware5
hooked 2 17 -39 12 plumbing9
hooks 3 31 -39 -39
hope 1 -23 -39 -39
hose 5 39 -21 6 plumbing9
hoses 2 36 -39 -39
hot 5 10 -3 -4 plumbing11
hour 4 4 -39 -39 plumbing6
hours 4 1 -39 -39
house 5 3 -6 -39
how 3 -31 -39 -10
hrs 3 40 -39 -39
humid 1 32 -39 -39
humidity 2 35 -39 -39
humming 2 23 -39 10
hump 2 25 -39 -39
hums 3 35 -6 17 electrical10
hundred 6 23 -7 -20 hvac8 concrete6
hung 6 34 -17 8 doors10
husband 2 -16 -39 -39
hvac 2 40 -3 -39
i'd 5 40 -15 -1
i'll 7 40 1 0
i'm 7 40 -15 -1
i've 6 40 -26 4
ice 3 1 -39 -39
if 6 -14 -39 -5 concrete7
in 9 3 -12 9
inch 8 40 6 -14 hvac5
inches 6 40 -20 -28
ins 1 35 4 -39
inside 5 5 -12 5
insp 2 40 -39 -39
inspection 2 22 -39 12
inspector 4 26 -18 -18
inspector's 2 40 -39 -1
install 3 33 -39 -5
installed 3 28 -39 12 hardware5
instead 3 1 -39 10
insulated 2 40 11 -39
insulation 4 40 -14 0
into 4 -12 -1 0
iron 2 14 2 -39
is 9 1 -18 14
island 4 18 9 -16 electrical10
isn't 4 40 -39 16
it 9 0 -17 -3
it'll 4 40 -7 -14
it's 8 40 -23 -1
its 5 12 12 -13
itself 3 12 -10 16
ivory 1 28 11 4 electrical10
jack 3 -9 -39 -39
jacks 1 24 -39 -39
jam 1 11 -39 8
jamb 3 40 -5 -5 doors6
jambs 1 40 -39 -39
jammed 1 15 -39 9
jan 2 40 -39 -39
jefe 2 35 -39 -39
job 4 -4 -10 2 plumbing7
joint 4 24 -8 7
joints 3 30 -39 1
joist 4 40 -10 -39
joists 4 40 -39 -12
july 1 9 -39 -39
jumper 1 24 4 4
junction 1 22 -39 -39
just 6 -19 -5 3
keep 4 -10 -16 -10
keeper 1 21 -39 -39
keeps 3 6 -7 12
kept 2 -2 -39 -4
kettle 1 23 4 -39
key 4 7 -39 -3
keypad 1 35 -39 -39
keys 3 10 -39 -3 hardware7
kg 2 40 4 -39
kick 4 9 7 -13
kicks 2 21 -39 12
kid 3 -10 -3 -10
kid's 2 40 -3 -3
kidding 1 -12 -39 -39
kids 4 -5 -7 -13
kind 2 -21 -39 7
kindly 1 10 -39 -39
kinked 1 40 -39 11
kit 5 32 2 9
kitchen 6 31 11 -15 appliances8 doors8
kits 2 37 -39 12
knee 2 13 -39 -2
knees 2 4 -39 1
knife 2 3 -3 -39
knob 2 32 -3 -39
knobs 2 40 -39 -5 hardware5
knock 2 -3 -39 -39
knocked 2 11 -39 -5
know 4 -28 -19 -39
knows 2 -12 -39 -39
kowalski 1 40 9 -39
lab 2 3 -2 -39
label 2 20 -39 -2
lacquer 1 39 -39 8
ladder 4 32 0 -39
ladder's 1 40 -39 -39
lads 2 15 -39 12
lady 5 7 -39 -11
lady's 2 40 -5 -5
lags 2 40 -3 -39
laid 4 18 -6 3 concrete12
lake 1 0 9 -39
laminate 2 40 -4 -4
lamp 3 23 -10 -10 electrical11
land 2 -2 -39 -4
landed 3 19 -39 9 electrical11
landing 4 27 6 -39 lumber8 flooring12
landlord 3 28 -39 -39
lands 2 20 -39 9
lane 1 -1 4 4
laser 2 15 1 -39
last 6 2 4 -11 flooring6 paint5
latch 5 40 7 -9 hardware8 doors10
latches 2 40 -39 11 hardware7 doors8
late 1 -20 -39 -39
later 3 -12 -39 -39
latex 2 33 -39 -1
lath 2 40 -39 -39
laugh 1 -6 3 -39
laundry 5 29 8 -39 hvac7
lav 2 40 11 -39
law 1 -12 -39 -39
lay 3 6 -39 -39
layer 2 26 -2 -2
layers 3 34 -39 -39
laying 1 10 -39 15
lazy 2 15 -39 -39
lb 3 40 -10 -39 hardware6 electrical6
lead 2 0 8 -39
leaf 2 24 -39 4 hardware6
leak 4 30 -8 -4 plumbing8
leaking 4 39 -39 10 plumbing6 hvac7
leaks 3 39 -39 12 plumbing5
lean 3 21 -39 -6 lumber7
leaned 2 31 -39 0
leaning 3 31 -39 -1
leans 2 33 -39 17
least 1 -19 -39 -39
leave 6 2 -15 -1
leaves 2 4 -4 3
leaving 2 -8 -39 -39
led 2 11 -4 -4 electrical11
ledger 2 39 5 -39
left 8 19 1 3
leg 4 13 -14 -3 electrical8
legs 3 8 -39 1 doors6 lumber8
length 3 27 -39 -39
lengths 3 36 -7 -39
let 5 -14 -24 0 drywall7
lets 1 5 11 15
letter 1 -10 -39 -39
letting 1 -3 -39 4
level 5 23 -13 -5 lumber6
leveled 2 38 0 7
leveler 2 40 -3 -3
lever 2 26 7 -39
lf 1 8 -39 -39
lh 1 40 11 4
library 1 4 19 -39 doors9
lid 4 40 1 7 doors6
lid's 2 40 -39 15
lift 3 15 -11 -39
lifted 3 26 -39 8
lifting 2 24 -39 18
light 6 15 -8 -4 electrical10
light's 3 40 -39 8 electrical6
lights 4 12 -39 2
like 7 -8 -9 0 drywall8
likes 1 -9 -39 -39
lime 2 25 7 0
line 6 13 -11 6 appliances6 hvac6
line's 1 40 -39 3
linen 4 39 10 -39 doors12
liner 2 36 -39 -39 plumbing8
lines 3 12 -39 -39 plumbing7
lining 1 18 -39 4
lint 2 34 -1 -1
lip 2 19 -4 7
lippage 1 40 -39 -39
list 4 8 -39 -39
listen 2 -21 -39 -39
lit 1 13 -39 -39
litre 2 40 3 -39 paint11
litres 2 40 0 -39
little 4 -15 12 -39 paint5
live 3 -9 -10 -4
living 4 3 -14 -39 doors7
load 3 14 -9 -39 electrical9
lobby 2 14 6 -39
lock 4 17 2 2 hardware10
locks 1 16 -39 3
loft 2 29 14 -39
log 1 12 -39 -39
lol 3 40 -9 4
long 6 2 0 -12
longer 3 3 13 -39 hardware9
loo 1 26 3 -39
look 5 -12 -39 -14
looked 2 -9 -39 -39
looking 2 -24 -39 -39
looks 4 -6 -39 -2
loop 2 24 -5 -5
loose 5 27 -2 10
lord 2 -10 -39 -39
lose 2 -13 -39 0
lost 3 -9 -8 8 electrical7
lot 4 -10 -14 -39
lounge 2 17 11 -39
love 2 -33 1 -39
lovely 2 -8 -39 8
low 5 20 1 -5
lower 3 17 6 -12
lowers 1 33 -39 3
lr 3 40 14 -9 doors5
luis 3 40 -39 -39
lumber 2 27 8 -39
lunch 4 7 -39 -39
lvp 1 40 -39 4
machine 3 5 -39 -9
made 3 -13 -11 -5
mailbox 2 24 15 -1 hardware6
main 3 11 9 -39
make 5 -9 -6 -4 drywall8
maker 2 24 -2 -39
makes 2 -18 -39 -39
man 5 -17 -6 12 doors6
manifold 1 36 -39 11
manny 1 9 -39 -39
mantel 2 40 6 -5
maple 3 32 -7 -39
marble 3 30 3 -39
marco 1 11 -39 -39
mark 2 -2 -3 -39
marked 2 19 -39 3
marks 1 5 -39 -39
master 3 5 5 -39 plumbing8
mastic 3 40 -8 -1 hardware8
mat 3 34 2 -2
match 4 13 4 -39 paint12
matching 1 20 9 -39
mate 1 2 3 3
max 2 -1 4 -3
may 2 -25 1 8
maybe 5 -7 -21 4 concrete7
mdf 2 40 1 -39
me 7 -14 -16 -23 drywall7
mean 3 -21 -12 -39 plumbing5
means 1 -20 4 4
meantime 3 17 -39 8
meanwhile 2 10 0 11
measure 3 25 -39 0
measured 4 40 -39 1
measures 2 25 -39 17
medallion 2 32 -39 1
medicine 2 5 -39 -39
meet 1 -24 -39 4
meeting 1 -15 4 -39
membrane 3 40 -7 4
mesh 4 40 -39 -6 drywall11
metal 3 16 6 -39
meter 5 40 -6 -22
metre 3 40 -2 -39
metres 4 40 -39 -39 lumber6
microns 1 40 -39 3
microwave 2 27 3 -39
mid 1 31 9 3
middle 4 12 -1 -39
mike 1 -13 -39 -39
mil 5 40 5 -16
mill 1 14 -39 -39
millimeter 4 40 -3 -39
min 3 35 -39 -1 plumbing8
mind 3 -17 -39 -39
mine 3 -6 -11 3
mini 2 27 -3 -39
minimum 1 16 -39 -39
minute 3 -15 -39 1
minutes 4 -2 -5 -15 plumbing6
mirror 4 23 -3 -39 electrical8
mirror's 2 40 -39 -2
miss 2 -19 -39 3
misses 1 14 11 18 hardware8
missing 6 22 -9 13
missus 1 21 -39 -39
miter 2 40 -39 3 lumber8
mitered 2 40 -39 -39
mitre 1 40 3 -39
mix 3 16 -6 -6 hardware6
mixed 2 10 -2 -2
mixer 2 36 6 -39
mixing 2 25 -39 0
mm 6 39 2 -22
model 1 1 -39 -39
moisture 3 40 -39 -39
mold 3 30 -39 10 lumber8
molding 1 35 -39 -39
mom 2 -20 -2 -39
mon 4 29 -18 4 concrete7
monday 6 36 -16 -8
month 1 -11 -39 -39
more 6 1 4 -17 paint5
morning 6 7 -8 -39 concrete6
mortar 4 40 -5 1 concrete13
mosaic 2 40 -39 0
most 1 -23 -39 -39
mother 2 -19 -39 -39
motor 2 14 -39 -2
mount 2 18 9 9
mounted 3 35 -39 13
mouse 1 6 3 -39
move 4 -3 -12 -18
moved 4 12 -16 -3
moves 3 12 -39 7
moving 3 -3 -6 1
mr 3 -25 -39 -39
mrs 4 -1 -17 -39
ms 2 -2 -39 8
mstr 1 40 4 -39
much 3 -25 1 -39 plumbing6
mud 4 32 -20 -7 hardware5 concrete7 drywall12
mudroom 3 40 6 -39
mush 1 24 -39 3
must 5 -3 -7 3 paint8
my 6 -16 8 -15
myself 3 -14 -39 -5
nah 1 1 -39 -39
nail 5 31 -14 -39 lumber6 hvac6
nailed 3 29 -39 3 lumber10
nailer 2 40 -39 -39
nailing 1 31 -39 -39
nails 4 29 -3 -1
natural 2 1 -39 -39
nd 4 31 13 -39
ne 1 20 20 -39
near 4 10 4 6
nearly 2 4 -39 6
need 8 9 -8 -11 paint5
needed 4 6 -13 12 paint7
needs 6 19 -5 4 paint5
neighbor 2 13 -39 -39
neighbor's 1 40 15 -39
nest 2 20 -39 -39
neutral 3 30 -39 -39 electrical11
never 5 -13 -9 7
new 7 12 14 -16 plumbing5
newel 3 40 10 -8 lumber9
news 2 -9 -39 -39
next 5 2 -5 8 roofing8
nice 3 -14 -11 -11
niche 3 40 6 -10
nicked 2 35 -39 5 electrical7
nickel 2 22 -5 -39
night 5 -10 -8 -39 electrical8
nine 6 29 1 -4
nineteen 3 38 3 -12
nineteenth 1 37 -39 -39
ninety 4 40 -9 -6 plumbing6
ninth 2 22 -39 -39
nipple 2 28 -39 -1
nite 1 32 -39 -39
no 8 -3 8 0
nobody 5 9 -1 -5 tile5
nobody's 1 40 -39 -39
noise 2 9 -6 -39
none 3 1 -39 -9
noon 4 23 -13 -39
north 3 9 19 -39
nos 2 40 -39 -39
nosing 3 40 -1 -11 lumber9
not 7 -9 -11 4
notch 2 25 0 -39
notched 3 40 -39 -5 lumber10
note 2 2 -3 -3
nothing 6 -3 -24 -2 electrical6
noticed 2 0 -39 -39
now 7 -2 -11 2
nowhere 1 -1 -39 -39
number 5 5 -39 3
numbers 2 2 -39 -39
nursery 3 30 8 -39
nursery's 1 40 -39 4
nut 3 23 -39 10 plumbing12
nuts 3 5 -39 -39
o'clock 1 40 -39 -39
oak 4 37 3 -9
oc 1 36 -39 -39 lumber9
of 9 2 8 4 paint5 drywall6
off 8 11 -13 4
office 4 2 1 -39 doors7
offset 2 38 8 1
oh 5 -20 -39 3
ohm 2 40 -39 -39
ohms 2 40 -39 -39 tile10
oil 4 18 -16 -5 hardware8
oiled 2 38 -39 1
ok 6 3 -19 3
okafor 2 40 -39 -39
okay 6 -8 -5 -15
old 7 9 15 -16 flooring8
on 9 5 -8 9
once 4 -3 -39 -3 paint7
one 9 10 4 -10
one's 5 40 -13 -13
ones 5 15 -15 -9
only 6 2 -11 6
open 6 10 -8 0
opened 5 23 -39 5
opener 1 22 13 3
opening 4 19 -39 6 doors8
opening's 2 40 -39 5
opens 3 17 -39 0
or 5 -10 -6 6 drywall5
orange 2 7 0 -39
order 6 15 -13 -13
ordered 4 21 -7 -7
ordering 2 18 0 -39
oscar 2 10 -39 -39
other 5 -4 5 -39
others 2 -8 -39 -39
otherwise 1 -3 -39 -39
ought 2 -5 -39 -1
oughta 2 40 -39 -1
our 3 -28 16 -39
ours 2 5 -39 -39
out 8 2 -21 1
outlet 4 40 -2 1
outlets 3 40 -39 -8
outside 5 7 0 8 hvac12
outta 2 1 12 -39 hardware6
oven 4 32 8 -39 appliances10 doors7
over 7 5 -14 7 appliances8
overflow 2 39 -39 -3 plumbing8
overhang 2 40 0 7
overnight 4 30 -39 -1
owe 3 7 -39 -39
own 3 -15 8 -39
owner 5 29 -20 -39
pack 4 17 -16 -16 tile5 paint9
packed 4 23 -39 -13
packet 2 32 3 -39
packing 2 18 14 8 hardware5 plumbing8
packs 2 25 -3 -39
pad 3 26 -39 7
pads 2 29 -39 -3
pail 3 40 -6 -39
paint 6 33 -7 -11 paint7 drywall5
paint's 2 40 -39 0
painted 4 31 -8 3 doors6 lumber5 hvac5
painter 4 35 -15 -39 paint11
painter's 2 40 1 -39
painters 2 31 -39 -39
painting 2 3 -39 -39
pair 3 16 -39 -39 hardware7
pairs 1 21 -39 9
pallet 3 40 -5 -5
pan 4 33 -6 -6 plumbing8 hvac8
pan's 2 40 -39 -39
pane 1 36 -39 -39
panel 6 40 -8 0 appliances15 electrical5
panel's 2 40 -39 3
panels 4 40 -39 5 doors6 lumber8
panes 1 40 -39 0 doors10
pantry 5 40 15 -13 doors8 lumber6
paper 5 13 -5 1 paint6
paper's 1 40 -39 -39
park 1 -9 -39 -39
parking 1 3 -39 -39
parlor 2 20 7 -39
part 3 -12 1 -5
particle 1 28 3 -39
parts 1 0 -39 4
party 2 -16 -39 -39
pass 3 3 -11 -39 electrical6
passed 3 9 -3 4
passes 2 11 -39 1
past 4 4 -2 -6 electrical6
paste 2 33 -39 -39
patch 5 32 -14 -11 electrical6 drywall12
patched 3 38 -7 4
patio 3 34 9 -7
pavers 1 40 4 -39
pc 2 33 -3 -39
pcs 3 40 5 -39 lumber8
pea 2 23 17 1 plumbing9
peel 2 25 -39 -4
peeling 2 36 -39 12
peephole 1 36 -39 -39
pencil 2 17 9 9
pendant 1 32 -39 15
penny 1 2 -39 4
people 3 -25 -39 14
per 3 16 -9 -9
percent 4 22 -5 -39 electrical9 paint6
pergola 1 40 15 -39
permit 2 16 -39 -39
pete 2 2 -39 -39
phone 3 -9 -9 -39
photo 2 7 -39 0
photos 1 6 -39 -39
piano 1 4 3 -39
pick 4 1 -15 -9
picked 3 7 -39 -39
pickets 1 40 -39 -39
picking 2 8 -4 -39
picks 1 13 9 -39
picture 3 -5 -39 -39
pictures 2 -5 -39 -39
piece 5 16 -23 -5 lumber6
pieces 4 19 -16 0 tile8
pile 1 8 -39 4
pin 3 20 -2 -9 hardware6
pine 2 22 17 -3 lumber8
pinhole 1 39 -39 -39
pink 1 4 8 -39
pinned 3 30 -39 -39 doors5 lumber7
pins 3 31 -39 -39
pint 2 27 -39 -39 paint11
pipe 5 31 -11 -2 plumbing9 hvac10
pipe's 1 40 -39 4
piped 1 40 -39 3
pipes 2 21 -39 4
pit 2 14 9 5
pitch 2 14 11 -3
pitched 2 35 -39 13 plumbing9
pivot 2 40 2 -5 hardware6 doors8
place 5 -5 -10 0
plan 1 -14 -39 -39
plane 3 2 -39 -39
planed 2 40 -39 -39
plank 2 35 -5 -39
planks 1 40 -39 -39
plaster 4 40 -1 -3
plaster's 1 40 -39 4
plastic 4 23 0 -7
plate 5 30 -16 -3
plate's 3 40 -39 8
plates 4 29 -39 0 electrical9
play 1 -24 4 -39
please 5 -6 -18 0 paint10
plenty 3 5 -8 -1 paint8
plinth 2 40 -6 1
pls 3 40 -39 -1
plug 4 29 -1 3 electrical7
plugged 3 40 -39 2
plugs 2 36 -39 7
plumb 4 40 -9 -5 lumber9
plumbed 2 40 -1 10 plumbing10
plumber 5 40 -14 -20 plumbing10
plumber's 2 40 -4 -39
plumbing 1 19 -39 -39
plus 3 11 -39 8
ply 3 40 -12 -39 doors5
plywood 3 40 -39 -39
pm 3 30 -39 -39
pocket 3 13 -39 -39 hardware6
point 4 3 -39 -12 electrical8 hvac8 concrete8
points 1 1 -39 -39
pole 2 16 -3 -39
polish 1 11 -39 -39
polished 1 27 -39 -39
poly 3 40 -3 6 paint11
pool 2 5 -5 -39
pop 3 4 -39 4
popcorn 1 13 3 -39
popped 3 23 -39 5 tile11
pops 2 13 -39 11
porcelain 1 28 -39 4
porch 4 34 15 -11 electrical7 lumber7
post 4 23 -18 6 lumber8
posts 4 40 -39 0 lumber9
pot 2 10 -3 -39
pound 3 21 -9 -39 hardware8
pounds 4 18 -13 -39 plumbing9
pour 2 15 3 -4
poured 3 31 -39 3
powder 4 27 -10 -16 paint9
power 2 -7 2 -39
pr 1 23 18 -39 hardware8
pre 1 37 -39 -39
press 2 -1 9 -2
pressure 4 11 -39 5 plumbing9
pressure's 1 40 -39 -39
pretty 2 -19 -39 -3
price 2 -3 -39 -39
primary 2 17 -1 -39
prime 3 19 -10 -39
primed 4 40 -2 2 lumber9
primer 5 40 -39 1 paint11
privacy 1 7 11 4
probably 2 -19 -39 1
problem 2 -15 -4 -4
profile 2 12 -39 14
promised 2 -2 -39 -39
prop 2 24 -39 0
proper 2 5 15 -39
proud 4 8 -39 3 tile10
psi 4 40 -39 -39 plumbing12
pt 1 32 13 -39
puddle 1 26 11 -39
pull 5 13 2 -2
pulled 6 26 -19 6 flooring8
pulling 3 14 -39 7 electrical9
pulls 4 31 -39 4 electrical6 doors5
pump 4 30 -4 -17 electrical7
punch 3 10 -39 -5
punky 2 40 -39 5 lumber10
push 3 7 -39 -39 doors8
pushed 2 7 -39 -39
put 7 11 -1 -15
putting 2 -2 -39 -2 electrical10
putty 3 40 -11 -11 doors6
pvc 2 40 8 -39
qt 3 40 14 -39 paint15
quart 4 40 -39 -39 paint16
quarter 7 40 0 -14
quarters 4 28 -11 -39
quarts 2 33 -39 -39
quick 3 -2 5 -39
quiet 3 0 -39 -9
quit 3 3 -39 -2 plumbing6
quits 1 24 -39 4
quote 2 20 -39 3
rack 3 25 -8 8
racked 2 36 -1 13
radiator 4 40 0 -39
rail 5 40 -9 3 lumber10
rail's 2 40 -39 11
railing 1 30 3 3
rails 1 35 -39 -39
rain 4 16 -39 -39 paint9
rains 2 20 -39 -39
raise 2 3 -4 -39
raised 1 2 -39 4
raked 2 40 0 -39
ramp 2 26 0 -39
ran 5 20 -7 -3
rang 1 18 -39 9
range 4 25 11 -39 appliances10 hvac8
rapid 2 23 7 -39
rated 2 38 -5 1 electrical11
rather 2 -7 -39 -39
rattles 1 34 -39 16
raw 2 18 16 -39
ray 3 3 -10 -10
rd 2 17 4 -39
re 5 -29 -19 -2
reach 3 7 -9 -9
read 3 -6 -10 13
reading 3 6 -39 2 electrical7
reads 4 31 -14 14 electrical9
ready 4 -7 -7 3 paint10
real 3 -15 -1 3
really 1 -37 -39 3
rear 3 21 5 -8
rebuilt 1 30 -39 3
receipt 2 17 -39 -39
receptacle 2 40 -39 6
reception 2 16 -39 -39
recheck 2 38 1 -39
reckon 2 13 -39 -39
recut 2 40 -39 -39
red 4 4 -4 -4 paint7
redo 3 40 -3 -39 plumbing6
redone 2 40 -39 -39
reducer 3 40 -39 -39
refitted 1 40 -39 4
register 2 19 -5 -5
reglued 2 40 -39 1
regulator 1 34 -39 -39
rehang 1 40 -39 -39
rehung 2 40 -39 8
relief 2 13 -2 -2
remain 1 1 -39 9
remains 1 7 -39 9
remake 1 31 -39 -39
remind 2 2 -39 -39
remote 2 14 -39 -2 hardware7
rental 3 29 -7 -7
reorder 2 40 -39 -39
rep 1 19 -39 -39
repair 2 21 2 9
replace 2 17 -39 -39
replaced 4 36 -12 5
replacement 2 23 7 -3
report 3 -2 -39 -39
required 2 15 -39 -1
reseated 1 40 -39 9
reset 4 40 -39 -14 electrical5
rest 4 3 -39 -11
restroom 1 25 16 -39
return 4 12 -7 -1 doors7 hvac8
returned 1 4 -39 -39
returns 2 15 -39 12
reveal 2 21 -39 6
reveals 1 27 -39 13
reversed 1 25 -39 9
rh 1 38 -39 3
rick 2 8 -39 -39
ridge 3 26 -39 -8
right 6 -13 -7 -3 roofing7
rigid 2 30 -39 -39
rim 2 33 -39 -5
ring 5 16 -9 -9 tile5 concrete6
rings 2 9 -39 -39
rink 2 30 -39 22 paint14
rip 3 16 -39 -8 lumber7
ripped 3 18 -39 8 doors8
rise 3 14 -39 5
riser 3 40 -39 -39
riser's 2 40 -39 -39
risers 2 40 -39 -39
rm 4 40 3 -5 electrical5
ro 1 28 3 -39
road 2 -3 -39 -39
robe 2 15 12 1
rock 4 9 -15 -15 lumber6
rocked 2 25 -39 19 plumbing10
rocking 2 26 -39 -39
rocks 3 14 -7 12 lumber6
rod 4 33 -1 -7 hardware8
rods 2 33 -39 -39
roll 6 25 -3 -16 concrete6 paint6 drywall10 roofing6
rolled 3 28 -39 4
roller 3 32 -1 -11 paint10
rollers 2 38 -6 -39 doors7
rolls 5 36 -6 -13 flooring8 paint12
roof 4 22 -3 -18 hvac9 roofing15
roofer 2 40 -39 -39
room 7 13 9 -25 flooring8
room's 2 40 -39 -39
rooms 1 3 -39 -39
roots 1 17 -39 3
rot 2 18 -39 -39
rotted 3 40 -39 14
rotten 2 15 2 6 lumber10
rough 3 13 0 0
roughed 2 40 -39 13 plumbing9
round 5 21 -10 4
row 3 16 -39 -10
rows 2 32 -39 -39
rtu 1 40 5 -39 hvac12
rubber 3 21 2 -39
rubbing 1 19 -39 3
rubs 2 32 -39 21 doors8
rudy 1 40 -39 -39
run 6 9 -11 2 appliances6 hvac7
run's 2 40 -39 12
rung 1 30 -39 -39
runner 2 27 -39 -5
running 4 5 -17 3 plumbing8
runs 4 23 -19 9
rush 1 0 -39 -39
rust 3 39 -4 0 plumbing8
rusted 3 40 -39 13 plumbing6
saddle 2 21 18 -3 plumbing9
safe 1 -15 -39 4
sag 1 32 4 4
sagging 2 40 -3 12
sags 3 40 -39 16 hardware6 lumber5
said 5 -9 -11 -11
salon 3 34 0 9
same 4 -3 5 -1
sample 2 15 -39 10
sand 5 32 -13 -6 concrete11 paint6 drywall9
sanded 4 40 -39 -4 doors6 paint8
sander 2 40 6 -39
sanding 3 40 -39 -8
sandwich 2 12 -39 -39
sash 4 40 -16 -6 doors10
sat 4 19 -39 8
satin 3 39 6 -5 paint12
saturday 6 26 -15 -2 tile9 concrete7
save 1 -15 -39 3
saw 4 -6 -5 -9
say 5 -12 -22 -7 paint6
saying 3 -13 -39 -39
says 6 12 -9 4
schluter 1 40 4 -39
school 1 -24 -39 -39
sconces 1 40 -39 -39
scrap 3 28 -5 -5
scrape 3 32 -39 -1 paint9
scraped 3 40 -39 4
scrapes 2 36 -39 11 hardware6
scraping 1 26 3 -39
scratch 3 20 -39 -4 doors9 concrete9
scratched 2 21 -39 12
screed 2 40 2 -39
screen 3 21 -7 -7 doors7
screens 1 26 4 4
screw 5 27 -39 -10 hardware5
screwdriver 2 31 -39 -39
screwed 5 26 -14 1 lumber10
screws 6 40 -19 -5
scribe 3 40 -39 -39 doors8
scribed 4 40 -39 5 doors8 lumber6
scuff 1 36 4 -39
seal 4 29 -39 -7
sealant 3 40 -1 -39
sealed 4 32 -39 3 hvac7
sealer 3 40 -39 -11
sealing 1 33 -39 -39
seam 4 40 -11 3
seam's 1 40 -39 4
seams 2 37 -39 -39
seat 3 7 -1 -1 plumbing6
seat's 2 40 -39 -39
second 6 10 9 -12
seconds 1 -7 -39 3
section 1 1 -39 -39
see 6 -11 -11 -17 paint5
seen 1 -25 -39 -39
sees 1 0 3 -39
seized 2 28 -39 18 plumbing7
self 3 20 3 -8 hardware7
semi 2 30 -39 -2
send 4 2 -15 -39
sending 2 6 -39 -39
sensor 2 32 3 -3
sent 4 4 -39 -39
service 1 -10 11 -39
set 7 18 -9 5 tile6
sets 2 12 -39 6
setting 2 6 -39 -39
settled 1 4 -39 11
seven 6 23 -1 -7
seventeen 3 27 -39 -7
seventy 4 40 -39 -7
sf 2 40 -39 -39
shade 1 17 -39 3
shave 2 12 -39 -39 lumber10
she 6 -10 -14 -4
she'd 2 40 -39 -39
she'll 2 40 0 7
she's 5 40 -39 -4
sheathing 2 40 -39 -3
shed 3 25 5 -39
sheet 5 37 -16 -12 drywall13
sheets 5 36 -21 -15 tile7 drywall16
shelf 5 40 -4 0 lumber7
shellac 2 40 -7 -39
shelves 4 40 -39 -12 doors8
shift 2 11 -39 -39
shim 4 40 -4 -8
shimmed 4 40 -13 4
shims 3 40 -39 -1 hardware6 paint9
shingles 2 40 -39 -39
shipped 1 21 -39 -39
shoe 3 17 3 -2
shoes 1 -9 -39 -39
shoot 2 -13 -39 -39
shop 6 26 -11 -8
short 6 25 -14 2
shorted 2 38 -39 -1
shot 4 1 -39 10 plumbing6
should 4 -13 -11 -4
show 3 -17 -39 9
showed 3 5 -39 5
shower 5 26 -2 -17 tile12 plumbing6
showing 2 4 -39 11
showroom 1 34 -39 -39
shows 3 11 -9 14
shut 5 3 -39 -13 plumbing6 hvac6
shutoff 2 40 -39 12 plumbing8
shuts 2 31 -39 -39 hardware5
shy 4 22 -39 -6 doors6
side 7 21 -5 7 roofing7
side's 2 40 -39 3
sides 4 26 -5 -15 doors6
sideways 1 24 -39 3
siding 3 40 -39 -9
sign 3 1 8 -11
signed 2 7 -5 -39
signs 2 6 -39 -39
silicone 4 40 -18 -12 tile7
siliconed 1 40 -39 4
sill 4 40 -5 -5 doors9
silver 2 4 -39 -39
since 4 -5 -39 8
single 2 -2 8 4 electrical9
sink 5 37 6 -24 plumbing7
sink's 1 40 -39 -39
sinks 1 27 -39 4
sir 2 -28 -39 -39
sister 2 -9 -5 -39 lumber9
sistered 3 40 -39 -39 lumber12
sit 4 -2 -39 2 tile7
site 3 17 -39 -39
sits 4 33 -39 12
sitting 4 11 -39 3
six 7 23 0 -9 hvac7
sixteen 5 40 3 6 concrete5
sixteenth 4 40 -2 -39 hardware6
sixteenths 5 40 -11 -39 tile6 doors6
sixty 5 40 -7 -5
size 4 15 -39 -4
skim 3 40 -39 -39
skimmed 2 40 -39 3
skin 1 -2 3 -39
skip 2 10 -2 -39
skirt 2 15 0 0
skirting 3 40 -7 -39
skirting's 1 40 -39 3
skylight 1 32 11 -39
slab 4 40 -11 -5
slabs 1 40 -39 -39
slams 1 26 -39 9
slate 3 32 1 -39
slats 1 38 -39 -39
sleeve 3 30 -39 11
slid 2 33 -39 8
slide 3 17 -7 -39
slider 3 40 -10 -39
slider's 1 40 4 -39
slides 3 32 -39 5
slip 3 14 -1 -1 plumbing9
slit 2 25 -39 -39
slope 3 35 -39 3
slopes 1 30 -39 15
slow 3 3 -1 3 plumbing12
slurry 1 40 -39 3
small 4 4 9 -13 paint5
smell 2 -1 -5 -39
smelled 1 15 3 -39
smells 2 10 -39 6
smoke 4 12 -4 -39
smokes 1 19 -39 -39
smooth 2 8 -39 -39 hardware8
snaked 2 40 -39 -1 plumbing9
snap 2 11 -1 -39
snapped 3 34 -39 14 hardware6
snow 1 1 3 -39
snug 2 33 -39 6
snugged 3 40 -39 -3 plumbing10
so 9 11 -13 4
soaked 1 22 -39 -39
soap 2 15 3 -39
socket 3 38 -39 -39
sockets 2 37 0 -39
soffit 3 40 -5 -5 hvac13
soft 5 23 -19 -2 doors7
soil 1 15 9 -39
solder 1 40 -39 -39
solid 4 27 -11 1 lumber6 drywall11
some 5 -16 12 -6
somebody 6 8 -39 3
somebody's 3 40 -39 -39
someone 1 -25 -39 3
something 2 -31 -39 -3
somewhere 2 -4 -39 2
soon 2 -15 -39 -2
sooner 1 -2 -39 -39
sorry 4 -17 -15 2 lumber7
sort 1 -14 -39 -39
sorted 2 33 -39 -3 plumbing6
sound 3 -3 -1 8 tile10
sounds 2 -13 -39 12
south 2 2 19 -39
space 2 -4 -39 7
spacer 2 40 -39 -3
spacers 2 40 -39 0
spacing 1 36 -39 9
spare 4 20 5 -2
sparky 3 35 -10 -39 electrical12
spec 2 36 -39 0
special 1 -16 4 -39
spin 2 15 -3 -3
spindles 1 40 4 15
spins 3 36 -39 12 hardware7 plumbing5
spitting 1 20 4 11
splash 3 35 2 2
splice 2 40 -39 -3
spliced 2 40 -39 -39
split 5 23 -14 5 lumber6
sponge 2 18 -39 -39
spot 4 15 -10 -6 doors5
spots 3 20 -5 -5
spout 3 40 -4 -4 plumbing13
spray 3 25 4 4
sprayed 3 38 -39 4 doors14
sprayer 2 40 10 -39
spring 4 18 0 2 doors9
sprinkler 1 33 -39 -39
sq 3 40 -3 -39 tile10 lumber8
square 5 25 -3 -14
squares 1 26 -39 -39
squeak 2 30 -39 -2
squeaks 2 37 -39 13
squeeze 1 7 -39 -39
st 3 8 11 -39
stack 2 26 -6 -6
stacked 2 33 -3 -39
stain 4 39 0 -5 lumber11
stained 2 35 8 13 tile10
stainless 2 40 7 -4 hardware5
stair 5 40 11 -39 lumber12
stairs 5 26 -6 -19 lumber10
stairwell 3 35 8 -39
stand 2 -14 -39 -2
standing 3 4 -2 7
standpipe 1 40 -39 -39
stands 3 13 -39 15
staple 2 35 -39 -39 electrical11
stapled 2 39 1 1
staples 2 39 -39 -39
start 4 -1 -8 -8 tile9
started 2 -10 -39 -4
starts 2 4 3 10
stat 2 32 -5 6
static 2 24 -39 -39 plumbing9
station 1 -7 -39 8
stay 4 -7 -39 5 doors8
staying 2 -4 -39 1
stays 4 24 -15 13 electrical5
steam 2 16 9 -39 plumbing6
steel 3 15 1 -39
stem 2 32 3 -3 plumbing12
step 4 8 -16 -16
stepped 1 10 -39 3
steps 4 20 -6 -39 lumber8
stick 4 11 -17 -11
sticker 2 27 -39 0
sticking 2 11 -39 14
sticks 4 30 -11 8
sticky 1 18 3 3
stile 2 40 -39 -1
still 7 6 -39 9
stock 3 15 -2 13
stone 4 18 -3 -16
stones 1 10 -39 15
stood 2 6 -39 11
stool 2 27 -2 -39
stools 1 35 -39 -39
stop 4 -8 -7 -7 plumbing7
stopped 3 4 -39 3
stopper 1 38 1 8
stopping 1 4 -39 -39
stops 3 14 -39 0 plumbing7
store 4 12 -17 0
storm 3 13 -39 -39 hardware8
story 2 -15 -39 -1
stove 3 29 2 -39 electrical7
straight 4 7 -5 -5
straighten 1 11 -39 -39
straightened 1 20 -39 -39
strainer 1 40 1 1 plumbing9
strap 2 28 -39 -6
strapped 2 30 -39 9
street 3 -4 8 -1 plumbing6
stretch 2 11 0 0
stretched 1 25 3 20
strike 4 16 3 -5 hardware9 doors6
string 2 14 -39 10
stringer 2 40 0 -39
stringers 2 40 -39 -39
strip 5 31 -13 -1
stripped 4 40 -2 13 hardware9
strips 2 33 -39 -39
strong 2 -3 -39 -3
structural 2 35 -39 -39
stub 2 37 -39 16
stucco 1 40 1 -39
stuck 4 13 -16 8 plumbing6 hvac8
stud 4 33 -39 -13 hardware8
studs 4 40 -15 -15 lumber9
study 3 6 -6 -39 doors13
stuff 4 -5 -13 -3
sub 2 20 8 -39
subfloor 2 40 -5 -39 plumbing6
suite 3 16 8 -39
sump 3 40 -39 -39
sun 3 2 -39 -39
sunday 4 15 -1 -14
sunroom 3 40 8 -39
super 2 9 -39 -39 hardware7
supplier 3 40 -39 -5
supply 4 26 -1 -9 plumbing11
supposed 4 -3 -39 -7
sure 2 -30 -39 -39
surround 2 29 -3 4
susan 2 5 15 8 doors9
svc 1 40 -39 -39
sw 2 40 11 -39
swap 5 40 -9 -4 hvac6
swapped 5 40 -11 5 electrical6
swapping 2 37 0 -39
swear 1 -11 -39 -39
sweat 1 3 -39 -39
sweep 3 29 -39 3 doors10
sweet 2 -6 -39 -39 doors10
swing 3 16 -3 -3
swings 3 33 -39 6 doors9
switch 4 19 -3 2 electrical12
switches 1 23 -39 -39
table 2 -5 7 -39
tack 2 34 -4 3 flooring12
tacky 2 33 -39 1
tae 1 39 -3 -3
tag 3 17 -39 -39
tagged 2 30 -39 0
tail 2 5 -39 1
tailpiece 2 40 -1 6
take 5 -13 -22 -22 tile7 doors6
takes 3 0 -2 7
taking 2 -17 -39 -39
talk 3 -17 -39 -39
talking 1 -26 -39 -39
tall 4 18 7 -39
tank 4 21 -4 -39 plumbing8
tank's 1 40 -39 -39
tap 4 26 7 -3
tape 6 27 -14 -12 hvac5 paint7 drywall10
taped 5 40 -19 2
tapped 1 18 4 -39
tea 2 -1 6 -1
tear 2 7 -39 -39
tee 2 33 -39 10 plumbing11
tell 6 -9 -24 -4
temp 3 34 3 8
template 3 40 -39 7 lumber9
templated 1 40 -39 11
ten 6 20 -2 -6
tenant 4 40 -39 -39
test 4 13 -5 4 electrical6 plumbing6
tested 4 28 -39 8 electrical9
tester 1 39 -39 3
text 2 23 -39 -39
texture 2 31 -39 -39
th 4 8 -2 -39 hardware5
than 5 -8 -2 -6 tile8
thank 3 -26 -39 -5
thanks 1 -30 -39 4
that 8 -10 3 -1
that'll 3 40 -39 0
that's 7 40 -31 3
thats 2 24 -39 -39
the 10 8 14 -11
their 4 -13 14 -13 doors6
them 6 -3 -3 -8
then 7 0 2 -10 tile7 concrete7 paint9
there 7 -8 -22 0
there's 7 40 -20 -2
theres 2 38 -3 10
thermostat 3 40 3 -4 electrical10
they 7 -9 -26 2 flooring6
they'll 2 40 -39 -39
they're 5 40 -39 -2
they've 3 40 -39 0
thick 3 24 4 -39 paint9
thin 3 14 8 -39
thing 5 -7 -13 -39 hvac5
things 3 -21 -39 -6
think 4 -23 -39 -39
thinking 1 -22 4 -39
thinner 1 25 4 -39
thinset 3 40 -39 -7 hardware5
third 5 17 8 -14
thirds 1 35 -39 -39
thirteen 4 36 4 1 lumber7
thirty 6 40 -12 -2 appliances8
this 6 -21 -4 -4
tho 1 37 -39 -39
those 6 2 -6 -5
though 4 5 -17 10
thought 2 -25 -39 -39
thousand 1 -7 3 -39
thread 2 23 -39 -39
threaded 2 40 0 -39
threads 1 27 -39 4
three 8 20 0 -9
threshold 3 40 -12 -2
threw 1 -1 -39 -39
through 6 6 -19 -1
throw 3 -2 -1 -8
throws 1 15 -39 13 hardware7
thru 3 40 7 3 paint6
thu 3 40 -39 -5
thumb 2 12 -39 -39
thurs 4 40 -39 4 tile7 paint7
thursday 6 39 -13 -4 concrete9 drywall6
tie 2 1 -39 -1 hardware8
tied 3 13 -7 4 plumbing6
tight 5 20 -20 2 plumbing6
tighten 1 25 -39 -39
tightened 3 40 -39 -10 hardware7
til 3 29 -39 2
tile 6 40 -7 -5 tile10 flooring5
tile's 2 40 -39 -5
tiles 4 40 -7 0 tile8
till 7 21 -24 3 tile8 concrete8
timber 1 25 3 -39
time 5 -18 -39 -12
times 3 -9 -39 -6
tin 3 25 -9 -9 paint10
tip 2 9 -39 -4
tmrw 5 40 -39 9
to 9 -9 -2 -2
toast 2 5 -39 -2
today 6 7 -11 4 tile10 concrete7 drywall5
toe 3 25 -12 -12
together 3 -14 -39 -39
toggle 2 40 -1 -39
toggles 2 40 -39 -39
toilet 5 28 -12 -21 tile6 plumbing7
toilet's 2 40 -39 -39
told 5 -4 -21 -39 electrical6
tomorrow 7 19 -14 2 tile6 concrete9 drywall6
ton 1 18 14 -39
tonight 4 -3 -12 2
tony 1 -7 -39 -39
too 6 -1 -24 7
took 6 8 -25 0 flooring6
top 6 21 4 -9 flooring6
top's 2 40 -39 1 plumbing8
tops 2 19 -39 -1
tore 3 23 -39 14
torn 3 26 -5 14 appliances11
torqued 2 40 -39 8
total 3 8 -39 1
touch 5 11 -11 -4 paint6
touched 2 6 -2 -39
touches 1 15 -39 4
touching 2 14 -4 -39
toward 3 14 -7 -7
towel 4 25 -39 -13 plumbing6
town 1 -21 -39 -39
track 4 15 -9 1 doors11
traffic 2 8 -39 -3
trailer 1 11 -39 -39
transition 2 28 -39 -39
trap 5 28 -2 0 plumbing11
trap's 1 40 -39 -39
traps 2 21 1 -39
trash 2 10 -39 -3
travelers 2 29 -39 -39
tray 3 28 0 5
tread 3 40 0 0 lumber6
treads 4 40 -39 -3 lumber9
treated 3 13 13 1 lumber12
trench 2 26 -39 -39
tried 2 -14 0 -39
trim 5 40 -13 3 doors7
trim's 1 40 -39 -39
trimmed 3 40 -10 7 doors9
trip 3 6 -39 -39
tripped 2 24 -39 13 electrical9
trips 3 26 -8 15 electrical12
trowel 2 40 1 -39
truck 5 22 -8 -8 concrete8
trunk 1 6 -39 -39
try 2 -18 -5 -5 hardware8
tub 5 40 0 -16 plumbing7 paint8
tub's 2 40 -3 -39
tube 5 35 -3 -13 paint14
tubes 5 40 -2 -39 paint14
tue 1 40 -39 3
tues 3 40 -39 7
tuesday 5 32 -11 -14
turn 4 0 -18 -8 plumbing7
turned 4 7 -15 1 plumbing6
turnover 1 36 -39 -39
turns 3 8 -39 -2
tv 1 -9 8 -39
twelfth 2 38 -39 -39
twelve 6 36 -1 -1 drywall11
twentieth 2 37 -39 -39
twenty 7 40 -14 -5
twice 3 7 -39 4
twisted 2 13 -39 1
two 9 19 8 -6
type 3 3 -39 1
uh 5 -6 -5 0
um 4 1 -1 -9
under 7 17 -4 12
undercut 1 40 -39 9
undermount 1 40 -39 -39
underneath 3 18 -8 6 lumber5
underside 2 40 -39 -39
union 2 9 -39 -39
unit 5 23 -5 -7 plumbing5
units 2 13 -39 -39
unless 2 -10 -39 8
unopened 2 40 -39 3
until 5 4 -21 4 tile7 paint6
up 8 3 -20 3
update 1 18 -39 -39
uphill 1 33 9 9
upper 2 17 3 -3
uppers 3 40 -39 -39 doors6 lumber6
ups 1 23 4 -39
upside 2 18 -39 5
upstairs 5 18 -3 6 plumbing6
upstand 1 40 -39 4
us 4 -16 -12 -39 paint8
use 5 3 -5 -21 concrete10 drywall9
used 7 15 -22 -1
utility 3 37 3 -39 doors8
vac 2 40 -1 -1
vacuum 2 24 -3 -3
vacuumed 1 34 4 4
valve 5 40 -8 2 tile7 plumbing10
valve's 2 40 -39 4
valves 1 31 -39 1
van 4 16 -16 -39
vanity 4 40 5 -15
vanity's 1 40 -39 -39
vapor 2 38 0 7
varnish 2 39 -39 -39
vendor 1 29 -39 -39
veneer 1 35 1 1
vent 5 40 -5 -3 hvac7 roofing10
vents 2 31 0 -39
very 2 -28 -39 2
vinegar 2 31 -39 -39
vinyl 4 40 5 -7 tile9
visit 2 -4 -39 -39
volt 2 40 3 -39
volts 1 29 -39 -39
vs 1 19 -39 -39
wainscot 2 40 -1 -39
wait 4 -10 -39 -2
waiting 3 -5 -39 -39
waits 1 17 -39 13
walk 4 2 -39 -10
walked 3 6 -39 -1
walking 1 -9 -39 -39
walks 2 11 -39 -2
wall 7 35 -6 -3 drywall6
wall's 3 40 2 -1
wallpaper 2 27 -2 -39
walls 5 27 -7 -14 tile8 lumber8
walnut 3 37 12 -39 lumber8
wanna 1 -28 11 -39
want 6 -10 -11 -7
wanted 3 -13 -39 3
wants 6 14 -5 1
wardrobe 2 20 15 -39
warm 2 1 5 -39
warranty 2 36 -39 0
was 7 -6 -25 14 hvac8
wash 3 10 -9 -9
washed 2 14 -39 -3
washer 4 40 -3 -3 plumbing12
washers 3 40 -7 -39
wasn't 2 40 -39 0
wasp 2 32 -39 -39
waste 3 10 -11 -11 plumbing5
water 6 16 -4 -9 plumbing6
water's 2 40 -39 3
waterlogged 1 40 -39 16
wavy 1 35 -39 4
wax 4 33 -39 -39 plumbing7
way 5 -9 -18 -39
ways 1 -4 -39 -39
wc 2 40 -4 -39 plumbing6
we 7 -15 -7 0 concrete5
we'd 2 40 -39 1
we'll 3 40 -3 1
we're 5 40 -10 -1 paint5
we've 2 40 -39 -39
weak 1 1 3 -39
weather 2 7 -39 -39
weatherstrip 3 40 -39 3 doors11
wed 4 40 -39 7
wedge 2 29 6 6
wednesday 6 37 -14 -3
weds 2 40 -39 8
wee 1 14 13 -39
week 5 3 -18 -39
weekend 2 2 -39 -39
weeks 3 -4 -6 -39
weep 2 23 -39 -39
weeping 3 35 -9 11 plumbing10
weeps 2 40 -39 10 plumbing12
weighs 2 24 -39 -39
weight 3 10 -1 6 hardware9
weights 1 23 -39 -39
weld 1 37 1 -39
well 4 -23 -18 -12
went 6 7 -39 10 concrete6 paint7
were 4 -17 -39 15
west 2 2 20 -39
wet 5 23 2 -5 drywall7
what 5 -32 -20 -11 tile5
what's 2 40 -39 7
whatever 2 -15 -2 5
wheel 1 3 -39 -39
when 6 -5 -29 -4 concrete6
whenever 2 4 -39 10
where 6 -9 -13 8 drywall5
whether 1 -6 3 -39
which 5 1 -7 6
while 4 -6 -39 2
whip 2 13 -39 10
white 6 14 8 -3 tile6 paint13
who 3 -28 -39 -10
whoever 3 11 -39 -3 plumbing6
whole 5 3 5 -39
why 3 -31 -39 -39
wide 5 27 -9 -19 doors6
wider 2 27 1 -39
width 1 34 4 -39
wife 2 -15 -39 -39
will 5 -11 -4 3 concrete6
wind 3 3 1 -39
winder 1 40 4 11
window 6 24 1 -9 doors6
window's 2 40 -39 -3
windows 3 18 -39 -39 doors7
winter 1 3 3 -39
wiped 2 22 -39 -4
wire 5 25 -39 -2 electrical13
wire's 1 40 -39 -39
wired 3 29 -5 11 electrical12
wires 2 23 -4 -4
with 8 -1 4 2
within 3 3 -39 -5 lumber7
without 3 -9 4 2
wobble 2 40 -39 5
wobbles 2 40 -39 18 hardware5 lumber7
won't 5 40 6 14 appliances6 doors6
wont 3 40 13 11
wood 4 25 1 -12 lumber8 paint6
wool 1 22 -39 4
wore 1 4 -39 11
work 3 -17 -11 2 electrical7
working 2 -14 -3 -39 electrical8
works 4 6 -14 8 electrical7
worktop 2 40 12 -39
worn 2 17 -39 12 hardware7
would 3 -28 -39 -1
wouldn't 3 40 10 15 plumbing6
wrap 3 19 1 -9
wrapped 3 23 -9 2
wrench 1 21 -39 -39
write 2 -7 -39 -39
wrong 5 0 8 -10 roofing8
wrote 2 -3 -39 -39
y'all 1 40 -39 4
ya 2 -13 -39 -39
yard 4 21 -8 -1 concrete12
yards 2 11 -39 -39 concrete13
yeah 4 -29 -39 -5
year 2 -18 0 -39
years 2 -21 -39 -39
yellow 3 10 -7 -7
yes 2 -33 -39 -39
yesterday 3 2 -39 1
yet 5 1 -19 -3
you 7 -30 -12 -1
you'd 3 40 -39 -5
you're 2 40 -39 -39 plumbing9
your 4 -31 -1 -5
zero 2 6 1 -39
zip 2 19 -1 -39
zone 2 15 -39 -39
a_coil 1
accent_wall 2
access_door 2
access_panel 3
ag_pipe 1
air_gap 3
air_handler 2
air_vent 1
allen_key 2
angle_stop 2
anti_tip_bracket 2
arc_fault_breaker 1
attic_ladder 2
attic_stair 2
b_vent 1
back_door 4
back_edge 2
back_wall 3
backer_board 1
backer_rod 1
ball_valve 3
bar_top 1
barn_door 1
barn_door_track 1
base_cabinet 2
base_coat 2
base_sheet 1
base_shoe 2
basin_waste 1
basket_strainer 2
bath_fan 4
battery_pack 1
bay_window 2
bell_wire 1
bench_seat 1
bench_top 1
bifold_door 1
birch_ply 1
black_iron 1
black_tape 1
blank_cover 1
blank_plate 2
blue_tape 4
bonding_coat 1
bonding_jumper 1
bonding_primer 3
bottle_jack 1
bottle_trap 1
bottom_edge 1
bottom_pivot 1
bottom_plate 1
bottom_rail 3
box_extender 2
braided_line 2
brass_nipple 1
brown_coat 2
brush_seal 1
brush_strip 1
builders_bog 1
built_in 3
butt_joint 2
bypass_door 1
cabinet_catch 1
cabinet_door 2
cabinet_knob 1
cabinet_pull 2
cabinet_screw 3
cam_lock 1
can_foam 1
can_light 2
carpet_pad 1
carpet_tile 1
carriage_bolt 3
cast_iron 1
caulk_gun 1
ceiling_box 1
ceiling_fan 3
ceiling_grid 2
ceiling_medallion 1
ceiling_paint 1
ceiling_rose 1
ceiling_tile 2
ceiling_white 2
cement_board 2
chain_link 1
chair_rail 3
check_valve 2
chimney_cap 1
closed_cell 1
closer_arm 2
closet_bolt 2
closet_door 4
closet_flange 1
closet_pole 2
closet_rod 4
closet_shelf 3
closet_system 1
clout_nail 1
coat_hook 1
coffee_machine 2
cold_side 1
color_match 3
condensate_line 2
construction_adhesive 3
contact_cement 2
contractor_bag 2
control_joint 1
cooktop_cutout 1
core_drill 1
corner_bead 3
corner_board 1
corner_carousel 1
cove_base 3
cover_plate 2
crown_molding 1
curtain_rod 1
deck_board 2
deck_mud 2
deck_screw 3
decking_board 1
decking_screw 1
decora_plate 1
device_box 2
diamond_bit 1
diamond_blade 2
dip_tube 1
dog_run 1
door_casing 3
door_closer 2
door_frame 2
door_gasket 1
door_hinge 1
door_jamb 1
door_lining 1
door_opening 1
door_slab 1
door_stop 2
door_sweep 2
double_hung 1
downspout_elbow 1
downspout_strap 1
drain_line 2
drain_pan 3
drain_pipe 2
drawer_base 1
drawer_box 1
drawer_front 4
drawer_runner 1
drawer_slide 2
drill_bit 1
drip_cap 1
drip_edge 2
drip_leg 1
drip_line 1
drip_pan 1
drop_cloth 3
drop_ear 2
drop_rod 1
dryer_duct 2
dryer_vent 3
drywall_anchor 1
drywall_screw 2
duct_collar 1
duct_seal 1
duct_tape 1
edge_band 1
edge_banding 1
edge_restraint 1
edge_trim 2
egress_window 2
eighty_grit 1
end_cap 4
end_panel 4
entry_door 2
euro_hinge 1
exhaust_fan 2
exit_sign 2
expansion_joint 1
expansion_tank 3
extender_ring 1
extension_jamb 1
extension_ring 2
exterior_door 1
face_frame 3
fan_box 2
fan_brace 1
far_end 2
farm_sink 1
fast_set 2
faucet_handle 1
feature_wall 1
felt_bumper 1
felt_pad 1
fiber_tape 1
field_tile 1
fill_valve 1
filler_strip 3
filter_rack 1
finish_coat 2
finish_nail 2
finished_end 1
fire_caulk 2
fire_door 1
fire_tape 1
fireplace_surround 1
first_coat 4
five_quarter 1
flame_sensor 2
flashing_tape 2
flat_white 1
float_switch 2
floating_shelf 1
floor_box 2
floor_drain 3
floor_guide 2
floor_joist 1
floor_patch 1
floor_protection 1
floor_register 1
floor_tile 2
flower_bed 1
flush_mount 1
foam_roller 2
foam_tape 1
foil_tape 3
forty_five 4
four_by_four 2
fourteen_three 1
fourteen_two 2
french_cleat 1
front_door 5
front_edge 3
frost_free 2
furnace_filter 2
gable_vent 1
gang_box 1
garage_door 3
gas_line 2
gas_meter 1
gas_pipe 1
gas_strut 1
gate_hinge 1
gate_latch 2
gate_post 1
gate_valve 1
gauging_plaster 1
glass_door 2
glass_shelf 1
glazing_compound 1
grab_adhesive 1
grab_rail 1
grease_trap 1
green_board 2
ground_bar 2
ground_rod 1
gutter_seal 1
half_inch_board 1
half_round 1
hammer_arrestor 1
hand_shower 1
handrail_bracket 3
hanger_wire 1
heat_gun 1
heat_mat 3
heat_pump 2
heating_mat 1
hex_key 1
hex_tile 1
hidden_clip 2
hidden_hanger 2
hinge_pin 1
hinge_screw 3
hole_saw 2
home_run 1
hood_duct 3
hood_filter 1
hose_bib 4
hose_bibb 1
hose_clamp 1
hose_reel 1
hot_mud 2
hot_side 3
hot_tub 1
hot_water 3
house_number 2
house_wrap 2
ice_and_water 2
ice_maker 2
ice_maker_line 1
inside_corner 3
insulated_flex 1
interior_door 1
intumescent_strip 1
j_box 1
j_channel 1
jack_post 1
jamb_extension 1
joint_compound 1
joint_filler 1
joist_bay 2
joist_hanger 2
joist_tape 1
junction_box 2
kick_plate 3
kitchen_faucet 3
kitchen_island 3
kitchen_sink 2
kitchen_tap 1
knee_wall 2
lag_bolt 1
lag_screw 1
large_format 1
latex_caulk 1
lath_and_plaster 1
laundry_box 2
laundry_sink 2
laundry_standpipe 1
laundry_tub 1
lazy_susan 3
leaf_guard 1
led_strip 1
left_end 2
left_wall 2
levelling_compound 1
lid_stay 1
light_block 1
light_box 1
light_rail 1
light_switch 2
line_hide 1
line_set_cover 1
linear_drain 1
lining_paper 1
liquid_line 1
long_wall 3
main_tee 1
mantel_shelf 1
marble_threshold 1
masonry_bit 1
medicine_cabinet 3
mesh_tape 3
meter_can 1
mini_excavator 1
mini_split 2
mirror_cabinet 1
mirror_clip 2
mirror_light 2
miter_saw 1
mitre_glue 1
mixing_valve 2
moisture_board 1
moisture_meter 2
mop_sink 1
mortar_bed 1
mortar_mix 1
mortise_lock 1
mosaic_sheet 1
ms_polymer 1
mud_bed 1
mudroom_bench 3
mudroom_locker 1
multi_finish 2
nail_gun 2
nail_heads 1
nail_hole 3
nail_plate 3
newel_post 1
nine_inch_cover 1
nine_volt 3
o_ring 2
oil_primer 2
old_work_box 3
one_by_eight 1
one_by_four 1
outlet_box 1
outlet_cover 3
outside_corner 2
oven_housing 1
overflow_gasket 1
overflow_plate 1
paint_can 1
paint_finish 1
painter's_tape 1
pan_head 1
panel_cover 1
panel_door 2
panic_bar 1
paper_holder 1
paper_tape 1
particle_board 2
party_wall 2
passage_set 1
patch_cord 1
patch_panel 1
patio_door 2
pea_gravel 1
pencil_trim 1
penetrating_oil 1
penny_round 2
photo_eye 1
piano_hinge 1
picture_frame 1
picture_rail 1
picture_window 1
pink_stuff 1
pipe_boot 2
pipe_wrap 1
pit_lid 1
plaster_washer 1
plastic_anchor 1
plastic_shim 1
plate_rail 1
plinth_block 1
plumber's_putty 1
plumber's_tape 1
pocket_door 3
pocket_door_hardware 1
pocket_screw 1
pole_sander 1
poly_sand 1
pop_up 1
post_base 2
post_cap 2
post_hole 1
post_sleeve 1
pot_filler 2
power_point 1
prep_sink 1
pressure_switch 1
pump_truck 1
punch_list 1
purple_board 1
putty_knife 1
quarry_tile 1
quarter_round 4
quarter_turn 3
radiator_cover 1
radiator_valve 1
rail_bracket 1
range_hood 3
rapid_set 2
ratchet_strap 1
reception_desk 2
recip_saw 1
red_tape 1
relief_valve 2
repair_kit 2
retaining_wall 2
ridge_cap 1
ridge_vent 2
right_end 1
rim_joist 3
ring_shank 1
robe_hook 2
rod_bracket 1
roll_off 1
roof_cap 2
roof_hatch 2
roof_jack 2
roof_vent 1
rooftop_unit 1
rough_in 2
rough_opening 2
rubber_mat 1
rubber_tape 1
rubber_washer 1
san_tee 1
sanding_sponge 1
sash_brush 2
sash_cord 3
sash_lock 2
sash_weight 1
scratch_coat 2
screen_door 1
screw_hole 1
scribe_molding 1
seam_tape 1
second_coat 5
self_leveler 2
setting_block 1
sharp_sand 1
shaver_socket 1
sheet_metal 2
sheet_vinyl 2
shelf_bracket 3
shelf_pin 3
shellac_primer 2
shoe_molding 1
shop_vac 1
short_wall 1
shower_arm 2
shower_door 2
shower_floor 2
shower_glass 3
shower_head 2
shower_niche 1
shower_pan 3
shower_screen 2
shower_tray 2
shower_trim 1
shower_valve 2
shower_wall 2
side_door 3
side_gate 1
side_light 1
silicone_spray 1
sill_pan 2
sill_plate 1
silver_solder 1
single_gang 2
sink_base 3
sink_cutout 2
sink_faucet 1
sink_strainer 1
six_foot_level 1
skim_coat 2
skirt_board 1
skylight_curb 1
sleeve_anchor 1
sliding_door 1
slip_nut 2
smart_lock 1
smoke_alarm 3
smoke_detector 3
soap_dish 1
soap_dispenser 1
soffit_vent 1
soft_close_hinge 1
soft_close_slide 1
soft_close_stay 1
soil_pipe 2
spare_key 1
speaker_wire 1
splash_block 2
spray_foam 1
spring_hinge 2
sprinkler_head 1
stain_blocker 2
stainless_screw 1
stair_landing 1
stair_nosing 2
stair_runner 1
stair_skirt 2
stair_stringer 2
stair_tread 3
stat_wire 1
steel_plate 1
step_flashing 1
step_light 2
storm_door 3
strike_plate 1
structural_screw 3
stucco_patch 1
stud_bay 1
suction_cup 1
sump_float 1
sump_lid 1
sump_pit 1
sump_pump 1
supply_line 3
switch_box 1
switch_leg 1
switch_plate 1
t_and_p 1
t_molding 1
table_saw 2
tack_cloth 1
tack_strip 3
tar_paper 1
tempering_valve 1
test_ball 1
thermostat_wire 1
third_coat 2
threaded_rod 1
through_bolt 1
tile_adhesive 1
tile_saw 1
toe_kick 4
toggle_bolt 2
toilet_flange 2
toilet_paper_holder 1
toilet_seat 2
top_coat 1
top_edge 3
top_pivot 2
top_plate 2
top_rail 1
touch_up 4
touch_up_kit 1
touch_up_paint 1
touch_up_pen 1
towel_bar 3
towel_rail 1
towel_ring 2
tp_holder 1
trap_arm 2
trash_bag 1
trash_chute 1
trash_pullout 2
trim_paint 1
trim_ring 1
trim_screw 2
tub_drain 2
tub_filler 1
tub_spout 3
tub_stopper 1
tub_surround 2
twelve_two 1
two_by_eight 2
two_by_four 3
two_by_six 3
two_by_sixes 1
two_by_ten 3
two_by_three 2
two_by_twelve 2
two_by_two 1
type_s 1
under_cabinet_light 1
undermount_clip 1
undermount_sink 1
utility_sink 1
vanity_light 3
vanity_top 3
vapor_barrier 2
vapour_barrier 1
vent_cover 1
vent_fan 2
vent_hood 2
vent_pipe 2
vent_stack 3
vinyl_plank 1
wainscot_cap 1
wall_angle 1
wall_cabinet 2
wall_oven 1
wall_paint 1
wall_plate 1
wall_tile 2
washer_box 3
washer_hose 1
waste_pipe 1
water_filter 1
water_heater 4
water_line 2
wax_ring 3
weep_hole 2
well_pump 1
wet_saw 2
wet_wall 1
window_buck 1
window_casing 1
window_screen 1
window_seat 1
window_sill 2
window_stool 3
window_well 1
wire_nut 3
wood_filler 3
wood_glue 1
wood_screw 1
`;
