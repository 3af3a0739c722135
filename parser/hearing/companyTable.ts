/**
 * Words of 1961 annotated notes: in how many they are said (1 for 4, one more each time it doubles); then, in
 * tenths of a natural logarithm, how much oftener crews say them than others do, how much oftener before a name of the
 * trade than elsewhere, and behind one; then counters beside whose goods they stand, and how much oftener than beside any.
 * # is a number, . a mark or an end. Written by `tests/learn/company.ts`.
 */
export const COMPANY = `
# 8 40 -2 -3
. 8 40 6 5
abajo 1 40 -39 -39
about 6 -7 -19 2 drywall6
above 4 16 1 7
abt 1 40 -39 -39
ac 2 33 11 0 electrical6
accent 1 11 -39 -39
access 2 11 -39 -39
account 1 -4 -39 -39
across 3 9 -39 -11
acrylic 1 36 -39 8
actually 1 -21 6 6
add 3 15 -7 -39 electrical5 lumber6
added 1 14 6 6
adhesive 3 40 -11 0
adjust 1 21 -39 -39
adjusted 2 34 -39 8 doors6
aerator 1 40 -39 6 plumbing8
aff 2 40 -39 -39 plumbing5
after 5 3 -6 -4 tile11 paint8
afternoon 2 2 -39 -39
again 5 0 -22 -7
against 2 -12 1 -39
agreeable 1 28 -39 -39
ain't 3 40 -39 3
air 4 10 -15 -9 appliances6 hvac9
alarm 2 14 -5 -5
alarms 1 22 -39 -39
all 7 -5 -10 1
allen 1 13 -39 -39
allowed 1 -4 -39 -39
almond 1 36 10 3
almost 2 -11 -39 1
alone 2 -15 -39 0
along 3 2 -5 4
already 5 8 -11 0
alright 4 12 -13 -39 doors7
also 4 7 -7 2 paint8
altogether 1 18 -39 -39
aluminum 1 29 4 -39
am 4 -13 -39 -39
amp 2 38 16 -39 electrical12
amps 2 40 -2 -39 plumbing6
an 6 -2 1 -9 appliances6
anchor 1 20 -39 -39
anchored 1 34 -39 8
anchors 2 40 -39 2 hardware9
and 9 7 -12 6
angle 2 19 7 -39
another 4 -1 2 -8
anti 2 40 -39 -3
any 4 -14 9 1
anybody 3 -4 -39 -39
anyhow 2 19 -39 -39
anyone 1 -21 8 -39
anything 4 -13 -12 -5
anyway 4 1 -12 3
anyways 1 12 8 -39
anywhere 1 -8 6 13
apart 2 4 -39 0
apartment 2 -1 -39 -39
appliance 1 35 6 -39 electrical7
april 1 4 -39 -39
apron 1 23 8 8
apt 1 31 4 -39
architect 1 15 -39 -39
architrave 1 40 -39 -39
architraves 1 40 -39 -39
are 7 -5 -24 17 doors6 lumber6
area 1 -9 -39 -39
aren't 1 40 -39 20
arm 2 6 -5 5 plumbing6
around 4 -6 -10 5 paint7
arrived 2 10 -39 16
arvo 1 40 -39 -39
as 4 -16 -11 -11 plumbing6
asbestos 1 33 -39 -39
aside 1 7 -39 -39
ask 5 3 -39 -4
asked 3 -4 -39 -39
asking 1 -12 -39 -39
at 8 8 -8 6
ate 2 9 -2 -2
attic 4 39 7 -39 electrical7
away 3 -12 -11 0
awning 1 38 -39 -39
ba 1 24 14 -39
baby 1 -26 13 6
back 7 7 -11 -2
back's 1 40 -39 -39
backed 2 22 -39 7
backer 2 38 -39 -39
backfill 1 40 -39 -39
backing 1 15 8 15
backorder 1 40 -39 -39
backordered 1 40 8 -39
backs 1 16 -39 13
backset 1 40 -39 6
backsplash 3 40 5 -10 tile12
backwards 2 19 -39 -2
bad 4 -5 4 -8
bag 5 21 -5 -16 tile15 concrete13
bagged 1 29 -39 6
bags 5 32 0 -21 tile12 concrete17 drywall14
bakery 2 31 5 -39
balance 2 15 0 0
balances 1 34 -39 -39
balcony 2 24 18 -39 doors8
ball 3 2 -39 -39 plumbing7
ballast 1 36 -39 -39 electrical9
baluster 1 40 10 -39
balusters 2 40 -39 -39 lumber6
band 2 6 -39 -39
banded 1 40 -39 -39
banding 1 40 -39 -39
bar 4 17 -3 -11 plumbing6
bare 2 23 19 -39 lumber6
barn 1 14 3 -39
barrier 1 23 -39 -39
bars 1 5 -39 8
base 5 29 -4 -11 lumber8
baseboard 2 40 -2 -39
basement 4 28 2 -15
bases 1 26 -39 -39 doors8
basin 2 34 0 -39 plumbing6
basket 1 15 -39 1 plumbing10
bath 5 34 8 -14 plumbing8
bathroom 4 20 12 -39 tile8
batt 1 40 -39 11
batteries 1 15 -39 13 plumbing7
battery 2 22 -39 2 electrical8
batts 1 40 -39 3
bay 3 23 -39 -39
bays 1 39 -39 8
be 6 -12 -12 -39 tile7
bead 3 40 -39 -6 drywall10
beadboard 1 40 -39 4
beam 2 25 -4 -39 lumber9
bearing 1 12 -39 -39
beat 1 -12 -39 13
because 5 -4 -3 4
bed 3 -1 -1 -39 tile7
bedded 1 40 -39 13
bedroom 5 27 10 -19 doors9 flooring10
bedrooms 2 33 -39 -39 lumber6 flooring10
been 4 -13 -18 7 drywall5
before 7 11 -12 3
behind 6 18 -2 12 appliances12
believe 1 -28 -39 -39
bell 1 2 4 4
belly 2 18 -39 -39
below 4 23 -6 8 tile13 paint6
belt 2 9 12 -39
belts 1 20 -39 -39
bench 3 31 2 -39
bend 1 9 -39 -39
bent 4 37 -3 10
beside 1 11 -39 4
bet 1 -15 -39 -39
better 2 -21 -39 -39
between 4 4 4 5 tile6
bib 3 40 -39 -5 plumbing6
bifold 2 40 5 -39 hardware5
big 4 -8 8 -4
bill 1 -9 -39 -39
bin 1 19 13 -39
binds 1 37 -39 15 doors7
birch 2 37 -39 -39
birthday 1 -7 -39 -39
bit 4 2 -39 -13
bite 1 0 -39 -39 hardware6
bits 1 13 -39 -39
black 4 7 6 5 paint9
blade 2 24 0 7 electrical5
blank 2 20 -39 6 electrical6
bldg 1 40 8 -39
bled 2 32 -39 10 paint9
bleeding 1 3 -39 -39
bless 1 3 -39 4
blew 2 12 -39 3
blind 1 -2 -39 -39
blinds 2 39 -39 -5 doors7
block 3 14 -8 -2 lumber7
blocked 1 19 -39 15
blocker 1 37 -39 -39
blocking 1 20 -39 11
blocks 1 14 -39 1 lumber6
blower 1 38 15 8
blowing 2 13 -39 7 hvac9
blown 1 11 -39 11 electrical8
blows 1 9 -39 13
blue 3 5 3 -1 paint9
board 4 20 -11 -5 lumber6
boards 3 40 -39 -12 lumber9
boat 1 -11 8 -39
boiler 2 30 -39 -39
bolt 3 31 -1 -1
bolted 3 40 -39 13 lumber6
bolts 4 40 -39 7 plumbing7
bond 1 5 3 3
bonding 2 35 -4 -39 paint7
bone 2 15 -5 -39
book 2 -8 -39 -39
bookcase 1 34 13 -39 lumber8
booked 2 23 -39 -4
boot 2 20 -2 -39
boots 1 7 -39 -39
bored 1 8 -39 11
borrowed 1 13 6 -39
boss 4 11 -39 -39
both 5 10 14 -1 doors6
bottle 2 7 10 -3
bottles 1 8 -39 -39
bottom 5 30 6 -12
bought 3 4 -39 1 plumbing6
bowed 2 40 -3 15
bowl 2 15 -3 -39
bowls 1 25 -39 -39
bows 1 27 -39 22
box 6 32 -17 -10 hardware5
boxes 5 37 -11 -3 tile8 flooring8
boy 2 -18 -39 -39
boys 2 -10 -39 -2
br 2 40 11 -3 doors7
bracket 4 40 -7 5 hardware6
bracket's 1 40 -39 4
brackets 4 40 -39 -5 hardware5 lumber5
brads 2 40 -39 -39
braided 2 40 -39 -39
brand 1 10 -39 -39
brass 3 25 -1 3 hardware9
break 2 -11 -39 0
breaker 3 40 -39 6 electrical10
breakers 1 33 -39 10
breast 1 14 6 22 roofing12
brick 2 21 -2 -39
bridge 1 0 4 -39
bright 1 -4 -39 -39
bring 5 11 -6 -9
bringing 2 6 -1 -1 electrical6
brkr 1 40 -39 8
broke 3 5 -9 15
broken 4 13 -6 9 doors6
bronze 1 25 6 6
brother 1 -16 -39 -39
brought 2 -8 -39 -39
brown 2 6 3 -4 paint9
brush 2 17 -39 -39
brushed 1 30 -39 -39
brushes 1 33 4 11 paint9
bsmt 1 40 10 -39
btm 1 40 15 -39 lumber8
bubble 2 21 -39 0
bubbled 1 40 -39 8
bubbles 1 18 -39 -39 plumbing6
bucket 4 38 -11 -39 concrete6 flooring8 paint7 drywall13
buckets 1 27 4 -39
bucks 2 7 -39 -4
bug 1 8 -39 -39
building 1 -8 -39 -39
built 3 12 -39 1 doors10
bulb 2 30 -39 -2 electrical10
bulbs 1 31 -39 -39
bullnose 1 40 6 -39
bumpers 1 40 -39 4
bundle 1 25 -39 -39
bundles 2 40 -5 -39 lumber9
buried 1 1 -39 6
burn 1 -2 -39 4
burned 3 18 -8 2 electrical7
burner 1 26 8 -39
burnt 1 14 -39 6 electrical8
bushing 1 40 -39 -39 electrical8
busted 2 12 10 10
but 7 -6 -18 1
butt 2 7 -39 -39
butter 1 8 11 -39 hardware6
button 2 13 -39 -4
buttoned 1 37 -39 -39
buy 4 9 -5 -39 appliances7 paint8
buzzes 2 39 -39 17 electrical10
by 8 13 -9 4 appliances7 landscape5
bye 2 -9 -39 -39
bypass 1 25 11 15 electrical6
cab 2 11 10 10
cabinet 4 40 1 -18
cabinets 3 40 -6 -39
cable 3 25 -39 -6 electrical10
cafe 1 17 -39 -39
caja 1 40 -39 -39
cake 1 -4 -39 8
call 5 -1 -39 -9
called 3 -8 -7 -39
calling 1 -10 -39 -39
calls 2 2 -39 4
cam 1 27 1 8 hardware7
came 5 7 -39 14
camera 2 1 -39 -39
can 6 -11 -3 -15
can't 5 40 2 3 landscape9
cans 2 25 4 -39 paint7
cap 4 28 -14 3 hvac8
capped 2 40 -39 -5
caps 2 34 -39 -3
car 1 -27 8 -39
carcass 1 28 -39 8
carcasses 1 40 -39 3 doors8
card 2 1 -3 -39 hardware8
carpenter 2 27 -39 -39
carpet 4 32 -6 -39 doors7
carpet's 1 40 -39 -39
carry 1 -3 -39 -39
carton 1 32 -39 -39
cartridge 2 40 -39 -39 plumbing8
case 2 -8 -5 1
casing 3 40 -12 -12
cast 1 3 -39 8
cat 2 -1 1 -39
catch 2 -2 -39 -39
catches 1 17 -39 6
catching 1 13 -39 11 doors8
caulk 4 40 -5 -8
caulked 3 40 -6 11
cause 4 4 -39 7
cedar 1 24 -39 8
ceil 1 37 15 -39
ceiling 5 40 -7 -15 hvac5 paint6 drywall6
ceiling's 1 40 -39 -39
cell 1 0 -39 -39
cellar 2 23 8 -39
cellulose 1 40 -39 4 hardware7
cement 2 32 -5 -5 plumbing6
center 3 17 -5 -5
centered 1 37 -39 19
centers 1 28 -39 -39
centimeter 3 40 -8 -8 electrical6
centre 1 17 3 3
centres 1 40 -39 -39
ceramic 1 30 -39 -39
cfm 2 40 -2 -2 electrical6 hvac13
chain 2 16 -3 13
chair 2 2 -39 -39
chairs 2 19 -39 -39
chalk 1 21 -39 -39
change 4 3 -8 -39
changed 3 3 -39 0 electrical6
channel 2 15 -39 7 doors9
charcoal 1 29 -39 -39
charge 2 0 -2 -39
charged 1 7 -39 8
chase 2 9 -39 -1
chased 1 13 -39 -39
check 4 0 -39 -13
checked 2 8 -39 -4
checks 1 9 -39 22
chewed 2 35 -39 4 electrical6
chime 1 32 -39 8
chimney 3 36 9 -39
chip 2 15 -39 -39
chipped 2 34 -2 9 tile9
chirping 1 37 -39 10 electrical11
chirps 1 40 -39 -39 electrical7
choose 1 -2 13 -39
christmas 1 -10 -39 -39
chrome 1 35 10 3
chunk 1 23 -39 -39
church 2 0 -39 -39
circuit 2 26 -39 13 appliances11
cistern 1 40 4 -39
city 1 -11 -39 -39
ckt 1 40 -39 -39
clamp 2 26 -3 -3
clamped 2 40 -39 -39
clamps 3 40 -39 -39 hardware6
clay 1 12 17 6
clean 4 11 -3 -6 concrete9 flooring10
cleaned 3 24 -10 6 hvac7
cleaner 1 17 6 13
cleaning 1 3 -39 -39
cleanout 1 40 6 -39 plumbing7
clear 4 5 0 -7 concrete7 paint6
clearance 1 20 3 -39
cleared 2 13 1 -39
clears 1 18 -39 4
cleat 1 40 -39 -39 lumber8
cleats 2 40 -39 10 lumber8
clg 2 40 11 -39
click 1 18 13 -39
clicks 1 20 -39 8
client 3 10 -39 -39
clinic 1 12 -39 -39 plumbing7
clip 2 26 -39 -39
clipped 1 27 -39 6 plumbing8
clips 3 40 -39 -1
close 5 9 -12 -39 doors8
closed 3 11 -39 -1 drywall9
closer 3 12 -7 4 hardware6 doors9
closer's 1 40 -39 17 doors8
closes 2 27 -39 3 hardware6 doors5
closet 5 36 3 -5
closets 1 25 -39 -39
closing 1 4 -39 -39
cloth 1 16 -39 8
clothes 1 -12 8 8 hardware6
cloths 1 40 -39 -39 paint10
cm 3 40 -39 -39
co 2 28 -39 8 electrical6
coat 5 32 -10 -18 concrete11 paint10 drywall8
coating 1 38 -39 -39
coats 4 38 -3 -39 paint11
cock 2 19 -39 -1
code 2 8 -39 2 hardware7
coffee 3 0 4 -39
coil 2 40 -39 -39
cold 4 9 -7 -1 plumbing11
collar 1 13 6 -39
color 4 22 -2 0 paint12
colour 1 12 -39 8
column 1 14 -39 15
come 6 -10 -39 4 tile5 concrete6
comes 4 6 -39 7 paint6 drywall6
coming 5 0 -39 2 roofing7
company 2 -4 -39 -39
complaint 1 11 -39 8
complete 2 6 -39 8
compound 2 22 -39 0 hardware6
compressor 1 36 -39 8
concrete 3 30 6 -39
condensate 1 40 3 -39
conduit 1 35 11 -39
confirm 1 10 -39 -39
connected 1 6 8 8
construction 1 12 4 -39
consumed 1 24 -39 6
contact 2 2 -1 -1
contractor 2 29 -39 -39
control 1 -9 -39 -39
conversion 2 36 15 -39 paint9
cooktop 1 40 6 -39
coped 1 40 -39 8
copier 1 34 -39 -39
coping 1 31 8 -39
copper 2 28 12 -39
cord 3 31 -8 -1 electrical7
core 1 15 -39 11
corner 6 30 -2 -11 appliances11
corners 2 29 -39 -39
cornice 1 40 -39 -39
corridor 2 26 -1 -39 drywall11
cost 1 -3 -39 -39
could 4 -18 -39 -39
couldn't 1 40 -39 -39 doors7
count 1 -5 -39 -39
counted 2 25 -39 -39
counter 4 30 2 -13 tile6
counter's 1 40 8 -39
countertop 2 40 3 -4
couple 2 -9 -3 -39
couplings 1 40 -39 -39 plumbing10
course 2 -18 -39 -39
cousin 1 0 -39 -39
cove 1 24 6 -39
cover 4 17 -39 0 electrical9 drywall5
covered 1 2 -39 20
covers 3 26 -39 1 paint6
crack 4 24 -15 -5 doors7 concrete5
cracked 5 39 4 12 tile7
crank 1 17 -39 8
crawl 1 16 1 -39
crawlspace 1 40 6 -39
crazy 1 -22 -39 -39
credit 2 4 -39 0 doors8
crew 2 5 -39 -1
cricket 1 23 -39 15 roofing12
crooked 3 31 1 12 electrical6
cross 2 1 -39 1 plumbing6
crossed 1 6 -39 15
crown 3 28 -4 -11 doors6
crown's 1 40 -39 -39
crumbling 1 33 -39 -39
crushed 2 24 7 13 hvac11
ct 1 19 13 -39 paint9
ctr 1 40 -39 -39
cup 2 4 -39 -1
cupboard 1 29 16 10
cupped 1 40 -39 17
curb 3 34 5 -6 roofing10
curb's 1 40 -39 -39
curdy 1 40 -39 -39
cure 1 8 -39 4
curtain 1 13 6 -39
cust 1 40 -39 -39
customer 3 21 1 -39
cut 6 21 -15 2 lumber5
cutout 2 40 -39 11
cuts 2 17 -39 1
cutting 2 13 -39 -39
cycle 1 18 -39 -39
damp 2 34 7 -39
damper 2 40 2 -5 hardware6
danny 1 -6 -39 -39
dark 2 -1 -1 6
dated 1 10 -39 -39
dave 1 2 -39 -39
day 5 -2 -39 -10 concrete7
daylight 2 25 -39 -39 hardware5
days 4 2 -39 -39 lumber6 concrete11
dead 5 2 -2 9 electrical11
deadbolt 1 40 13 -39
deal 1 -21 -39 -39
dealer 1 10 -39 -39
decide 1 -3 -39 -39
deck 4 27 2 -2 lumber6
deck's 1 40 8 -39
decking 1 40 -39 -39
decora 1 40 8 -39
deep 4 18 -39 -17
deeper 1 9 -39 15
degree 1 7 -39 -39
degrees 3 20 -6 -6
dehumidifier 1 40 6 -39
delivered 2 16 -39 6
delivery 2 14 -39 9 doors6
demo 1 21 -39 -39
demo's 1 40 -39 -39
den 3 34 8 -39 doors9
dent 2 28 -39 -39
dental 1 18 -39 -39
dented 1 33 8 8
dentist 1 16 -39 -39
desk 2 7 -2 -2 electrical7
detector 1 24 6 -39
dia 1 35 -39 -39
dialed 1 31 -39 -39
did 4 -17 -39 -17 doors5
didn't 4 40 -7 0
different 2 -12 12 -39 electrical9
dig 2 5 -39 -39
dime 2 17 -39 -39
dimmer 2 40 -39 -39 electrical12
ding 2 23 -39 -39
dinged 1 40 4 4
dining 4 33 -7 -39 lumber7
disconnect 1 29 6 -39
discs 1 34 -39 19
dishwasher 3 40 11 -39
dishwasher's 1 40 -39 -39
disp 1 40 -39 -39
disposal 3 32 -6 -39 plumbing6
do 6 -17 -13 -39 tile6
does 3 -11 -11 6
doesn't 3 40 4 14
dog 3 -1 -39 -9
doing 2 -22 -4 -4
dollars 1 -7 -39 -39
don't 6 40 -3 0
done 5 6 -13 6 drywall6
dont 3 32 0 4
door 7 22 -4 -3 hardware7 flooring6
door's 4 40 -2 -6
doorbell 1 15 6 -39
doors 5 27 -39 -2 hardware7 doors6
doorway 2 30 0 -39 tile9
double 3 7 5 -5
down 7 5 -16 4 concrete6 flooring6 landscape7
downspout 2 40 -39 -39
downstairs 1 3 10 -39
dozen 3 17 16 -39 hardware6
dr 2 -10 10 -4 hardware5
draft 1 18 -39 4 doors10
dragging 1 19 -39 4 doors8
drags 2 40 -4 18 doors10
drain 5 40 4 -3 plumbing10
drain's 1 40 -39 -39
drained 1 27 -39 -39
drains 2 36 -39 -39
drawer 4 36 -39 -8 hardware7
drawers 2 28 -39 -39
drawing 2 17 -39 -3 electrical6
dribbles 1 37 -39 22 plumbing8
dried 2 31 -5 -5
dries 1 36 -39 15
drill 3 23 -39 -6
drilled 3 40 -39 -1
drip 3 38 -39 -12
dripped 1 38 -39 15
dripping 2 32 8 4 plumbing8 hvac7
drips 3 40 -39 13 tile8 plumbing12
drive 1 -12 -39 -39
driver 2 7 -39 -39
driveway 2 24 -39 -39
driving 1 -9 -39 -39
drop 4 12 -17 -1 plumbing5
dropped 3 10 -39 8 hardware6
dropping 1 10 -39 4 doors6
drops 3 27 -39 12 doors6
drove 2 8 -39 1 hardware7
drum 1 18 -39 -39
dry 5 30 -23 2 plumbing6 concrete6 paint6
dryer 4 40 2 -13 hvac6
drying 1 33 -39 -39
drywall 4 40 -3 -7 electrical5 lumber6 paint7
duct 4 40 -6 -2 electrical6 hvac12
duct's 1 40 -39 -39
ducted 1 40 -39 10 electrical8
due 2 7 -39 -3 lumber6
dug 3 27 -39 1
dump 1 1 -39 -39
dumping 1 24 -39 -39
dumps 2 30 -39 19 roofing11
dumpster 2 28 0 -39
dumpster's 1 40 -39 8
duplex 2 40 -39 -39 plumbing7
dust 2 11 -39 0
dw 1 40 16 -39 plumbing7
dye 1 20 -39 -39
ea 1 40 -39 15
each 4 5 5 7
ear 1 5 -39 -39
earliest 1 30 -39 -39
early 2 -3 -39 -39
eased 1 40 4 4
east 2 5 18 -39
easy 1 -21 8 -39
eating 2 1 -39 16
edge 5 31 -19 -6 paint7
edges 2 30 -39 -39
eggshell 3 40 -39 -39 tile9 lumber5
egress 2 40 -3 -39
eh 2 2 -39 8
eight 6 27 -1 -5
eighteen 4 40 -2 2
eighth 4 39 -15 -15 hardware6
eighths 5 40 0 -39 tile7 lumber6
eighty 3 40 -39 -12
either 2 -8 5 -39
elbow 3 31 -7 -7 roofing9
elbows 2 35 -39 -39 plumbing7
elec 1 40 3 -39
electric 2 14 7 -39
electrical 1 17 -39 -39
electrician 4 40 -7 -17 electrical14
electrician's 2 40 -39 -39 electrical8
eleven 5 40 5 -4
elm 1 31 6 -39
else 2 -15 -39 -39 lumber5
em 6 17 -15 -4 roofing7
empty 2 8 3 -4
enamel 2 40 -39 8 paint9
end 5 13 -2 -6 appliances5 roofing8
ends 2 12 -3 -3 electrical5
engineer 1 16 -39 -39
engineer's 1 40 -39 -39
enough 3 -9 3 -4
ensuite 1 40 11 -39
enter 1 0 8 -39
entry 3 27 10 -3 tile10
epoxy 3 40 -1 -7
escutcheon 1 40 6 -39 plumbing7
euro 1 34 -39 -39
even 3 -15 -10 -10 lumber5
evening 2 -5 -39 -39
ever 2 -20 -3 -39
every 5 2 10 -2
everybody 1 -20 -39 -39
everything 3 -11 -39 0
everything's 1 40 -39 -39
everywhere 2 6 -3 -3
exam 1 10 6 -39 doors6
except 4 10 -13 2 appliances8 doors7 hvac5
exchanged 1 25 -39 8 electrical9
exhaust 2 34 -1 -39
exit 2 17 -39 -39 electrical5
expansion 2 39 7 -39
ext 1 40 6 -39
extender 1 40 -39 4
extenders 1 40 -39 4
extension 3 31 -39 -5
exterior 2 31 15 -39
extra 3 13 7 0 paint9
eye 1 -9 -39 -39
eyes 1 -20 -39 -39
fabricator 1 40 -39 -39
face 3 -3 -4 3
factory 2 13 -39 -39
failed 1 5 -39 -39
fall 3 1 -39 -39
falls 2 14 -39 10 doors8
falta 1 40 -39 -39
family 3 -10 -39 -39
fan 5 28 0 -39 electrical9
fan's 1 40 -39 -39
far 3 -2 2 -39 hvac8
fascia 2 40 1 -39
fast 1 -15 -39 -39
fastened 1 35 -39 -39 doors6
faucet 4 40 3 -2 plumbing8
faucet's 2 40 -1 -39 plumbing7
fault 2 -4 0 0
feed 2 9 3 3 electrical9
feel 2 -22 -39 -39
feels 1 -8 -39 8
feet 5 20 -17 -23 roofing8
fell 2 5 -39 16 doors6 hvac8
fella 2 11 -39 14
felt 1 -9 -39 -39
fence 2 17 -39 4 lumber8
fiber 1 22 15 -39
field 1 -6 -39 6
fifteen 3 26 -11 -5 electrical5
fifth 2 13 -39 -39
fifty 5 35 -8 -4 hvac6
figure 3 1 -39 -7
figured 1 -9 -39 -39
file 2 7 -39 -39 hardware9
filed 1 12 -39 -39
fill 3 16 -4 -11
filled 3 21 -39 -11 concrete9
filler 3 40 -39 -5 appliances12
filter 3 40 0 -11 hvac7
filters 2 40 -39 3
fin 1 21 -39 -39
final 2 7 -39 -39
finally 3 3 -1 3 doors6
find 3 -13 -39 -39 electrical5
fine 5 0 -39 -3 paint7
finger 2 6 0 -39
fingernail 1 29 -39 -39
finish 5 21 -6 -10 tile8 paint6
finished 4 14 1 -1 lumber6
finishing 1 13 -39 -39
fire 3 0 -11 -39 electrical6
fireplace 2 30 -39 -39
first 5 0 -3 2 tile7 paint10 drywall7
fish 1 -8 -39 -39
fit 3 8 -6 -39
fits 2 16 -39 8 lumber7
fitted 3 40 -39 16 plumbing6
fitting 1 17 -39 -39
five 6 21 -5 -10 drywall5
fix 3 10 -39 -5
fixed 3 17 -9 -3
fixing 1 11 -39 -39
flame 1 14 -39 -39
flange 3 40 0 0 plumbing11
flap 1 29 3 10
flapper 1 40 -39 -39
flash 1 11 -39 4
flashed 2 37 0 -39 doors6 lumber6
flashing 3 40 -10 6 roofing10
flashlight 1 18 -39 -39
flat 5 31 -10 -3 paint8
flex 3 40 -1 -1 hvac10
flexible 1 29 14 3
flip 2 19 3 -39
flipped 2 25 -39 -39
float 3 31 -39 2 electrical5
flood 2 24 -39 -39
floor 6 28 0 -8 appliances6 tile9
floor's 3 40 -39 -39
flooring 1 39 -39 -39
floors 1 13 -39 -39
flour 1 22 -39 -39
flow 2 15 1 -39 plumbing7
flr 2 40 6 -39
flue 2 40 -39 -39
flush 3 30 -10 -3
flushed 1 22 -39 8
flushing 1 28 -39 15
foam 4 40 -7 -14 doors5 paint7
foamed 1 40 -39 3
foil 2 40 -39 -5
folks 1 -9 -39 8
foot 6 29 -10 -26 lumber6 roofing8
footer 2 40 -39 -39
footers 2 40 -39 -39 lumber7
footing 1 33 -39 -39
footings 1 40 -39 4
for 7 -5 -7 7
forget 3 -8 -39 -5
forgot 1 -7 -39 -39
forms 1 12 -39 -39
forty 5 40 -17 -7
found 4 -4 -12 -12
four 7 25 5 -8
fourteen 4 40 2 -2 drywall7
fourth 2 13 -39 -39
foyer 1 36 15 -39
frame 3 27 -10 -10 hardware5
frame's 1 40 -39 8
framed 2 28 -3 11
frames 2 35 -39 -39
framing 1 34 -39 -39
framing's 1 40 -39 8
frayed 1 36 -39 15
free 3 -3 -39 -39
freed 2 33 -39 -4 plumbing8
freezer 1 21 11 -39
fresh 2 1 15 -39
fri 4 40 -15 3
friday 6 32 -25 -4 concrete8
fridge 4 39 8 -39 appliances11 electrical5
from 6 0 -6 1
front 5 16 3 -23 flooring7 roofing10
fronts 1 37 -39 -39
frost 2 26 -39 -39
frt 1 40 6 -39
ft 5 40 -4 -39 electrical8 roofing7
fuga 1 40 -39 -39
full 4 7 -15 2 concrete7
furnace 3 39 0 -39 plumbing7
furniture 1 11 -39 -39
g'day 1 40 -39 -39
gable 2 40 8 -3
gal 4 31 8 -39 paint14
gallon 4 40 -18 -39 concrete8 paint17
gallons 3 39 -39 -39 paint15
galvanized 1 39 15 -39
game 1 -16 -39 -39
gang 2 10 12 -39 electrical8
gap 5 40 -9 1
gaps 2 40 -39 0 lumber8
garage 5 32 5 -21 roofing8
garbage 1 2 15 -39
garden 1 4 17 -39
gary 3 20 -39 -9
gas 4 14 0 -6 appliances12 plumbing5 hvac7
gasket 3 40 -39 8 plumbing10
gate 3 20 -5 -39 hardware6
gauge 3 40 3 -39 plumbing7
gave 3 -2 -39 -10 hardware6
get 6 -9 -39 -6
gets 4 4 -8 10 flooring8
getting 3 -11 -39 -1 plumbing5
gfci 2 40 -39 -39 plumbing6
gfi 1 40 3 -39
give 3 -21 -39 -39 paint7
gives 1 -7 -39 -39
glass 4 20 -2 -7 doors8
glides 1 40 -39 -39
globe 1 19 -39 -39 electrical9
gloss 1 31 -39 -39
glue 5 40 -13 -6 lumber6 flooring7
glue's 1 40 -39 4
glued 5 40 -20 1 lumber7 flooring5
go 6 -10 -26 -4
god 2 -21 -39 -4
goes 5 14 -39 13 tile7 lumber6
going 4 -17 -16 -6
golf 1 2 8 -39
gone 5 7 -39 8
gonna 5 -12 -5 -2 tile11
good 6 -7 -17 -12
got 7 0 -15 5
gotta 5 6 1 2 lumber6
gpm 1 40 -39 -39
grab 4 17 -39 -5
grade 2 10 10 -1
grain 1 20 -39 -39
granite 1 33 10 -39
gravel 1 32 -39 -39
gray 3 22 6 -9 paint8
grease 2 28 -5 -39 hvac12
greased 1 31 -39 -39
green 2 3 -3 -39
grid 2 28 -39 -3
grille 1 40 -39 -39
grind 1 20 -39 -39
grinder 1 35 3 -39
grit 1 37 3 -39
ground 3 12 -1 -5 electrical8
grout 4 40 -39 -11 tile9
grouted 2 40 -2 12
guard 1 -4 -39 6
guess 2 -17 -2 -39
guest 3 14 3 -39
guide 1 8 -39 6
guillotine 1 32 -39 -39
gun 2 -12 8 -39
gus 1 40 6 -39
gutter 2 29 3 -39
gutters 1 34 -39 -39
guy 5 -2 -20 3 hvac6
guy's 2 40 6 6
guys 3 -11 -11 0
ha 2 -2 -39 -3
had 6 -4 -19 11
hair 3 2 1 -9
hairline 2 38 -39 -39
half 7 28 -4 -15
halfway 1 12 -39 -39 doors9
hall 6 31 10 -9 tile5
hallway 3 29 7 -39
hammer 2 19 -39 -39
hand 4 6 2 -39 doors6 paint6
handle 4 9 -39 11 appliances7 doors5
handles 1 26 -39 8
handrail 3 40 -2 -2 lumber8
handrail's 1 40 -39 6
hands 1 -20 -39 -39
hang 4 12 -11 -11 doors6 drywall6
hanger 2 37 -39 11
hangers 3 40 -9 -39 roofing10
hanging 3 15 -5 9 hardware5 electrical6
hangs 3 32 -39 15
happy 3 -6 -39 -39
hard 4 -1 1 -2 concrete6 drywall6
hardware 2 25 -39 -2 hardware8
hardwood 1 38 4 -39
has 6 4 -23 13
hasn't 2 40 -39 11 plumbing8
hatch 3 28 -4 -39
hauled 1 34 -39 -39
have 7 -9 -14 -2 tile5 concrete5
haven't 2 40 -39 8 hardware5
having 1 -18 -39 -39
hazard 1 20 -39 -39
haze 1 35 -39 -39
he 6 -18 -10 -2 electrical6
he'd 2 40 -39 -39 electrical7
he'll 4 40 3 -2
he's 5 40 -39 -1 drywall6
head 4 -1 6 6 hvac6
header 2 40 11 -39
headroom 1 40 -39 8
heads 2 7 -39 5
hear 2 -18 -39 -39
hearth 3 40 13 -6
heat 4 18 -5 -5
heater 3 40 2 2 electrical6 plumbing5
heating 1 27 4 -39
heavy 1 1 3 3 hardware6
height 2 23 -3 11
held 3 17 -11 4 hvac7
hell 1 -25 -39 -39
hello 3 -12 -39 -39
help 1 -32 -39 -39
hendersons 2 40 -39 -39
her 5 -11 1 -14
here 5 -20 -39 -5 lumber6
here's 1 40 -39 4
hers 1 9 6 -39
herself 2 4 -1 10
hex 1 29 -39 -39
hey 4 -19 -39 -12
hi 3 -9 -39 -39
hidden 2 11 -39 1
high 4 5 -4 -39
higher 1 5 -39 -39 tile9
him 4 -20 -17 -17
hinge 5 40 13 -10 doors6
hinges 3 40 -39 -39 hardware7 doors8
hip 1 9 -39 -39
his 4 -17 7 -16 electrical6
hit 4 0 -2 3 paint8
hits 3 18 -5 15 appliances11 doors6
hiya 1 9 -39 -39
ho 1 1 -39 -39
hob 2 40 11 0
hold 3 -8 -39 -3 lumber6 paint5
holder 1 34 1 1
holding 4 15 -7 5
holds 2 18 -39 5 lumber5
hole 5 25 -22 4
hole's 1 40 -39 -39
holes 4 32 -16 6 concrete9
holiday 1 6 -39 6
hollow 2 21 -3 3 tile12
home 3 -13 -10 -39 hardware6
homeowner 3 40 -6 -6
hon 1 10 -39 11
hood 4 29 5 -13 hvac11
hook 3 14 -7 0
hooked 2 19 -39 14 plumbing8
hooks 2 32 -39 -39
hose 4 40 -17 5 plumbing8
hosed 1 37 -39 -39
hot 4 10 -3 -5 plumbing11
hour 3 3 -39 -39
hours 3 0 -39 -39
house 5 1 -9 -39 concrete6
how 3 -29 -39 -8
hrs 3 40 -39 -39
humid 1 34 -39 -39
humidity 2 38 -39 -39
humming 1 23 -39 3 plumbing5
hump 2 27 -39 -39
hums 2 37 -3 18 electrical8
hundred 5 23 -4 -16 hvac9 concrete6
hung 5 34 -17 9 doors9
husband 1 -14 -39 -39
hvac 2 40 0 -39
i'd 4 40 -15 2
i'll 6 40 2 2
i'm 6 40 -17 -2
i've 5 40 -39 3
ice 2 2 -39 -39
if 5 -13 -39 -7 tile5
in 9 3 -12 9
inch 7 40 7 -12 hvac5
inches 6 40 -26 -26 roofing5
ins 1 35 8 -39
inside 4 3 -7 8 appliances7
insp 1 40 -39 -39
inspection 1 20 -39 11
inspector 4 26 -14 -39
inspector's 1 40 -39 8
install 2 34 -39 -39
installed 2 29 -39 12
instead 2 2 -39 7
insulated 1 40 17 -39 hvac10
insulation 3 40 -39 1 electrical6
into 4 -10 -1 -1 drywall6
invoice 1 31 -39 -39
iron 2 13 7 -39
is 8 1 -20 14
island 3 18 8 -39 electrical11
isn't 3 40 -39 15
it 9 -1 -16 -4
it'll 3 40 -7 -7
it's 7 40 -24 -2 drywall5
its 5 13 10 -10
itself 2 10 -39 18
ivory 1 29 15 8 electrical7
jack 2 -8 -39 -39
jacks 1 25 -39 -39
jam 1 12 -39 4
jamb 3 40 -39 0 doors7
jammed 1 16 -39 6
jan 2 40 -39 -39
jefe 2 38 -39 -39
job 4 -4 -13 -3 plumbing6
joint 4 25 -14 10
joints 2 31 -39 -3 hardware6
joist 4 40 -13 -39
joists 3 40 -39 -7 hardware7
joyce 1 16 13 -39
july 1 9 -39 -39
jumper 1 27 6 6
junction 1 22 -39 -39
just 5 -18 -7 2
keep 4 -10 -12 -12
keeper 1 19 -39 -39
keeps 2 8 -5 11
kept 2 -1 -39 -1
key 3 8 -39 1 plumbing8
keys 2 7 -39 -39
kg 2 40 3 -39
kick 3 9 5 -39
kick's 1 40 -39 -39
kicks 2 22 -39 10
kid 2 -11 -4 -4
kid's 2 40 -39 1 hardware6
kidding 1 -10 -39 -39
kids 3 -9 -39 -39 plumbing6
killed 1 -20 -39 -39
kind 2 -18 -39 7
kindly 1 15 -39 -39
kinked 1 40 -39 8
kit 4 32 3 8
kit's 1 40 -39 19
kitchen 6 31 11 -21 doors9
kits 2 38 -39 15
knee 1 7 -39 -39
knees 2 9 -39 1
knife 2 4 -39 -39
knob 1 30 3 -39
knobs 2 40 -39 -3 hardware6 doors6
knock 1 -3 -39 -39
knocked 2 11 -39 -39
know 4 -28 -15 -39
knows 2 -10 -39 -39
kowalski 1 40 11 -39
lab 2 4 1 -39
label 1 20 -39 -39 electrical8
lacquer 1 40 -39 8
ladder 3 33 1 -39
lads 1 17 -39 11
lady 4 6 -39 -10
lady's 2 40 -3 -3
lags 2 40 -3 -39 lumber6
laid 3 15 -6 -6 concrete10
lake 1 3 11 -39
laminate 2 40 1 1
lamp 2 24 -39 -39 electrical10
land 2 -1 -39 -39 plumbing7
landed 2 23 -39 8 electrical10
landing 3 27 2 -39 lumber6 flooring12
landlord 2 28 -39 -39
lands 2 21 -39 1
lane 1 -1 -39 -39
last 5 0 7 -7 flooring7 paint5 drywall7
latch 4 40 8 -9 hardware8 doors9
latches 1 40 -39 11 hardware6 doors7
late 1 -19 -39 -39
later 2 -10 -39 -39 hardware7
latex 1 35 -39 1
lath 1 40 -39 -39
laugh 1 -7 -39 -39
laundromat 1 29 8 -39
laundry 4 28 7 -39
lav 2 40 12 -39 plumbing9
law 1 -9 -39 -39
lay 2 5 -39 -39
layer 1 26 -39 3
layers 2 34 -39 -39
laying 1 12 -39 17
lazy 2 19 -39 -39 doors8
lb 3 40 -5 -39 hardware6
lead 2 -1 6 -39
leaf 1 19 -39 -39
leak 3 31 -12 -5 plumbing9
leaking 3 40 -39 9 appliances7 plumbing7
leaks 3 40 -39 10 appliances7
lean 1 15 -39 -39
leaned 1 29 -39 6
leaning 2 32 -39 3
least 1 -17 -39 -39
leave 5 1 -14 -1
leaves 2 7 -3 -3
leaving 1 -9 -39 -39
led 2 11 0 0 electrical10
ledger 1 37 1 -39
left 7 19 1 3
leg 3 11 -39 -8 electrical8
legs 3 9 -39 1 doors7 lumber8
length 2 27 -39 -39
lengths 2 37 -4 -39
less 1 -13 -39 -39
let 5 -14 -20 -1
letter 1 -10 -39 -39
letting 1 2 -39 4
level 5 23 -39 -8 lumber7
leveled 1 40 -39 10 lumber5
leveler 1 40 -39 -39
lever 1 27 10 -39 plumbing6
lf 1 7 -39 -39
lh 1 40 15 -39
library 1 3 15 -39 doors8
lid 4 40 4 8 drywall7
lid's 1 40 -39 11
lift 3 14 -39 -39
lifted 2 25 -39 4
lifting 1 21 -39 22
light 5 14 -11 -4 electrical9
light's 2 40 -39 5
lights 3 11 -39 2 hvac9
like 6 -8 -7 -1 drywall10
likes 1 -7 -39 -39
lime 1 24 13 6
lindqvist 1 40 -39 -39
line 5 12 -15 6 appliances7 hvac6
line's 1 40 -39 -39
linen 3 40 7 -39 doors11
liner 1 34 -39 -39 plumbing7
lines 3 13 -39 -39 plumbing5
lining 1 19 -39 8
link 1 9 8 8
linkage 1 38 -39 -39 hvac10
lint 1 33 -39 -39
lip 2 17 -39 8
lippage 1 40 -39 -39
list 3 9 -39 -39
listen 1 -23 -39 -39
lit 1 15 -39 -39
lite 1 37 6 -39
litre 1 40 3 -39
litres 1 40 6 -39
little 4 -16 9 -39 hardware5
live 3 -10 -5 1
living 3 2 -39 -39
load 2 12 -3 -39 electrical7
lobby 1 11 13 -39
lock 4 18 6 -1 hardware11
loft 2 30 13 -39
lol 3 40 -7 6
long 5 2 2 -13
longer 3 5 14 -39 hardware9
loo 1 24 8 -39
look 5 -12 -39 -14
looked 1 -8 -39 -39
looking 1 -21 -39 -39
looks 3 -5 -39 -2
loop 2 25 -2 -39
loose 5 28 -1 10
lord 1 -9 -39 -39
lose 2 -10 -39 -39
losing 1 -5 8 -39
lost 3 -8 -5 8 electrical8
lot 3 -11 -39 -39
lou 1 40 -39 -39
lounge 1 13 8 -39
love 1 -36 -39 -39
lovely 1 -11 -39 8
low 4 20 0 -7
lower 3 18 8 -8
lowers 1 35 -39 4
lr 2 40 15 -39 electrical5 doors6 lumber5
luis 3 40 -39 -39
lunch 3 6 -39 -39 plumbing5
lvl 1 40 -39 -39
machine 2 6 -39 -39 plumbing6
made 3 -12 -39 -8
mailbox 1 25 14 -39
main 3 13 10 -39 doors5
make 5 -9 -2 -6 flooring7 drywall8
maker 1 20 -39 -39
man 4 -17 -8 13
manifold 1 36 -39 8
mantel 1 40 1 1
maple 2 33 -3 -39
marble 2 26 -39 -39
marco 1 13 -39 -39
mark 2 -1 -1 -39
marked 2 20 -39 6
master 3 4 8 -39 plumbing8
mastic 2 40 -4 3 hardware8
mat 2 33 -4 -4
match 3 13 4 -39 paint12
matching 1 19 8 -39
mate 1 1 8 8
max 1 -3 -39 3
may 1 -26 -39 6
maybe 5 -6 -39 3 concrete8
mdf 1 40 -39 -39
me 7 -14 -25 -30 drywall7
mean 3 -23 -39 -39 plumbing5
meant 1 -12 -39 -39
meantime 2 15 -39 7 plumbing7
meanwhile 1 7 -39 8
measure 3 28 -39 2
measured 3 40 -39 0
measures 2 28 -39 17
medicine 2 6 -39 -39
meet 1 -24 -39 -39
meeting 1 -12 6 -39
membrane 2 39 -39 6
mesh 3 40 -39 -2 drywall11
metal 2 16 8 -39
meter 4 40 -9 -19 electrical6
metre 2 40 -4 -39
metres 3 40 -39 -39
mice 1 15 -39 -39
microns 1 40 -39 -39
microwave 2 28 7 -39
middle 4 11 -2 -39 lumber5
mike 1 -9 -39 -39
mil 4 40 3 -11 flooring7
millimeter 3 40 -2 -39
millimetre 1 39 8 -39
millimetres 1 40 -39 -39
min 3 33 -39 -6 plumbing8
mind 2 -16 -39 -39
mine 2 -11 -39 -39
mini 2 30 -1 -39
minute 2 -16 -39 -1
minutes 3 -3 -10 -39
mirror 3 23 -1 -39 electrical7
mirror's 2 40 -39 1
miss 2 -17 -39 5 doors5
misses 1 16 6 17 hardware8
missing 5 23 -10 13
miter 2 40 -39 6 lumber8
mitered 1 40 -39 -39
mitre 1 40 6 -39
mix 2 14 0 -39 hardware7
mixed 1 9 3 3
mixer 2 38 1 -39
mixing 1 23 -39 6
mm 6 39 1 -39 tile6
model 1 4 -39 -39
moisture 2 39 -39 -39
mold 2 27 -39 7 lumber7
molding 1 36 -39 -39
mom 1 -21 3 -39
mon 4 28 -39 -2
monday 6 36 -17 -6
month 1 -9 -39 -39
more 6 1 5 -17 paint5
morning 5 7 -7 -39 concrete7
mortar 3 40 0 4
mosaic 1 36 -39 -39
most 1 -24 -39 -39
mother 2 -18 -39 -39
motor 1 14 -39 -39
mount 2 21 7 7
mounted 3 38 -39 13
mouse 1 7 6 -39
move 4 -1 -9 -15
moved 4 13 -13 -2
movers 1 30 -39 -39
moves 2 9 -39 7
moving 2 -2 -3 3
mr 2 -25 -39 -39 hardware6
mrs 4 0 -14 -39
ms 1 -3 -39 6 electrical7
mstr 1 40 6 -39
much 2 -24 5 -39 plumbing8
mud 4 32 -16 -9 hardware5 concrete6 drywall11
mudroom 3 40 6 -39 tile8
multi 1 40 -39 8
mush 1 25 -39 -39
must 4 -3 -12 -1 tile5 paint7
my 6 -16 7 -13
myself 2 -16 -39 0
nah 1 5 -39 -39
nail 4 32 -17 -39 hvac6
nailed 3 29 -39 -6 lumber8
nailer 1 40 -39 -39
nailing 1 31 -39 -39
nails 3 28 1 -9
natural 1 2 -39 -39
naturally 1 2 -39 8
nd 3 29 16 -39
ne 1 22 20 -39
near 3 9 4 6
nearly 2 6 -39 8
need 7 10 -7 -10 paint5
needed 3 5 -7 12
needle 1 9 -39 -39
needs 5 18 -4 3
neighbor 2 14 -39 -39
nest 2 21 -39 -39 electrical9
neutral 2 30 -39 -39 appliances10 electrical8
never 4 -13 -15 10 appliances6
new 7 11 14 -15 plumbing5
newel 2 40 5 -39
news 1 -10 -39 -39
next 4 1 -18 9
nice 3 -15 -39 -39
niche 2 40 3 -39
nicked 2 37 -39 7 electrical7
nickel 2 22 -1 -39
night 4 -10 -14 -39
nine 6 29 2 -4
nineteen 3 39 6 -9
nineteenth 1 40 -39 -39
ninety 3 40 -6 -12
ninth 1 19 -39 -39
nipple 1 31 -39 0 plumbing9
no 7 -3 8 2
nobody 5 9 -2 -4
noise 2 11 -3 -39
none 2 0 -39 -4
noon 3 22 -39 -39
nope 1 -1 -39 8
north 3 8 20 -39
nos 1 40 -39 -39
nosing 2 40 5 -39 lumber8
not 7 -9 -10 2
notch 1 25 -39 -39
notched 2 40 -39 -39 lumber8
note 2 3 0 0
nothing 5 -3 -39 -1
noticed 1 -3 -39 -39
novak 1 40 -39 -39
now 7 -2 -13 1
nowak 1 40 -39 -39
nowhere 1 0 -39 -39
number 4 6 -39 5 appliances7
numbers 1 0 -39 -39
nursery 2 31 8 -39
nursery's 1 40 -39 -39
nut 3 26 -39 10 plumbing12
nuts 2 5 -39 -39
nylon 1 29 19 -39
o'clock 1 40 -39 -39
oak 3 35 6 -3 lumber6
oc 1 36 -39 -39 lumber8
of 8 2 8 4 paint6 drywall6
ofc 1 40 -39 -39
off 7 10 -13 2
office 3 1 0 -39 doors8
offset 1 37 13 6
oh 4 -19 -39 1
ohm 1 40 -39 -39
ohms 2 40 -39 -39 tile9
oil 3 17 -11 -4 hardware6
oiled 1 35 -39 -39
ok 5 2 -20 1 appliances5 hvac6
okafor 1 40 -39 -39
okay 5 -7 -2 -12 doors5
old 6 9 15 -13 flooring7
on 8 5 -7 9
once 4 -3 -39 -2
one 8 10 4 -9
one's 4 40 -15 -15 plumbing5
ones 4 14 -10 -16
only 6 3 -15 6
oot 1 40 -39 4
open 5 9 -10 -3
opened 4 24 -39 5
opener 1 21 15 -39
opening 4 20 -39 7 appliances8 doors8
opening's 2 40 -39 6
opens 2 15 -39 6
or 5 -10 -2 7 drywall6
orange 1 7 4 -39
order 5 15 -8 -21
ordered 4 20 -6 -39
ordering 1 20 3 -39
other 4 -4 7 -39
others 2 -5 -39 -39
otherwise 1 -3 -39 -39
ought 2 -3 -39 1 electrical8
oughta 1 40 -39 -39
our 2 -26 14 -39
ours 1 3 -39 -39
out 7 2 -22 1 flooring6
outlet 4 40 -2 -2 appliances7
outlets 2 40 -39 -39
outside 4 5 0 5 hvac12
outta 2 2 13 -39 hardware6
oven 3 34 10 -39 appliances9 doors8
over 6 4 -15 6 appliances8
overflow 1 37 -39 3 plumbing6
overhang 1 40 -39 10
overhead 1 20 8 -39
overnight 3 29 -39 -9 paint8
owe 3 7 -39 -39
own 2 -13 10 -39
owner 4 29 -17 -39
pack 4 18 -13 -13 paint7
packed 3 25 -39 -39
packet 2 35 -3 -39
packing 2 19 15 8 hardware6 plumbing5
packs 1 24 3 -39
pad 2 24 -39 4
pads 1 26 -39 4
pail 2 40 -2 -39
paint 5 32 -7 -9 paint9
paint's 1 40 -39 6
painted 4 33 -9 0 doors6 lumber6
painter 3 35 -11 -39 paint11
painter's 1 40 -39 -39
painters 1 28 -39 -39
painting 1 3 -39 -39
pair 3 19 -39 -39 hardware8
pairs 1 25 -39 10
pallet 1 40 -39 3
pan 4 33 -1 -8 plumbing7 hvac7
pan's 1 40 -39 -39
pane 1 38 -39 -39
panel 5 40 -5 -1 appliances13 electrical6
panel's 1 40 -39 -39
panels 3 40 -39 2 doors7 lumber6
pantry 4 40 16 -16 doors8 lumber6
paper 4 12 -5 2 paint6
paper's 1 40 -39 -39
parking 1 7 -39 -39
parlor 1 22 10 -39
part 2 -9 -3 -3
part's 1 40 -39 -39
particle 1 27 -39 -39
party 1 -20 -39 -39
pass 3 4 -8 -39 electrical7
passed 3 11 0 4
passes 1 13 -39 4
past 3 2 -1 -7
paste 2 34 -39 -39
patch 4 31 -10 -10 electrical7 drywall12
patched 2 39 -39 -4
patches 1 28 8 15
patching 1 30 -39 -39
patio 2 37 9 -5 doors6 concrete9
pattern 1 7 8 8
pavers 1 40 -39 -39
pc 1 26 8 -39
pcs 1 40 10 -39 lumber9
pea 1 22 17 6 plumbing6
peel 1 21 -39 -39
peeling 1 36 -39 10
peephole 1 36 -39 -39
pendant 1 34 -39 17
penny 1 2 -39 -39
people 2 -26 -39 10
per 3 17 -5 -39
percent 4 23 -1 -39 electrical8 paint6
permit 2 17 -39 -39
pete 1 2 -39 -39
pete's 1 40 -39 -39
petey 1 40 -39 -39
phone 3 -6 -39 -39
photo 1 5 -39 6
photos 1 7 -39 -39
piano 1 2 -39 -39
pick 4 3 -39 -6
picked 3 8 -39 -39 electrical6
pickets 1 40 -39 -39 hardware6
picking 2 6 -39 -39
picks 1 17 10 -39
picture 2 -4 -39 -39
piece 5 15 -20 -5 lumber6
pieces 3 20 -39 -5 tile6
pile 1 11 -39 6
pin 2 15 -1 -1
pine 1 18 17 -39
pink 1 5 -39 -39
pinned 2 30 -39 -39 lumber6
pins 2 31 -39 -39 lumber6
pint 2 28 -39 -39 paint8
pipe 4 32 -7 -1 plumbing8 hvac8
pipe's 1 40 -39 8
piped 1 40 -39 3 plumbing7
pipes 2 24 -39 5
pit 1 12 -39 -39
pitch 2 16 10 -39
pitched 2 37 -39 13 plumbing9
pitted 1 39 -39 8
pivot 2 40 5 -39 doors9
pk 1 40 8 -39
pkg 1 40 15 -39
pl 1 28 -39 -39
place 4 -4 -6 -6 doors5
plane 2 2 -39 -39
planed 2 40 -39 -39
plank 2 37 -39 -39
plaster 3 40 -10 -4
plastic 3 21 -1 -7
plate 4 28 -11 -2
plate's 2 40 -39 1 hardware7
plates 4 31 -39 3 electrical8
please 5 -5 -21 2 hardware5 paint10
plenty 3 8 -6 -6 paint6
plinth 2 40 -1 6
plinths 1 40 -39 8
pls 2 40 -39 7
plug 3 29 -3 1 electrical6
plug's 1 40 -39 8
plugged 3 40 -39 4 hvac9
plugs 2 37 -39 4 hardware6
plumb 3 40 -39 -10 doors5 lumber8
plumbed 2 40 1 8 plumbing10
plumber 4 40 -10 -39 plumbing9
plumber's 2 40 -39 -39
plumbing 1 20 -39 -39
plus 3 10 -39 5
ply 3 40 -39 -39
plywood 2 40 -39 -39
pm 2 26 -39 -39
pocket 3 14 -39 -39
point 4 3 -39 -39 electrical8 hvac6
points 1 0 -39 -39
pole 1 13 -39 -39
poly 2 40 -6 8 paint11
pool 2 5 -39 -39 concrete10
pop 2 0 -39 0
popcorn 1 14 -39 -39
poplar 1 39 -39 8
popped 2 21 -39 0
pops 1 14 -39 4
porch 4 34 15 -39 electrical7 lumber8
post 4 23 -14 6 lumber10
posts 3 40 -39 -2 lumber8 landscape10
pot 1 5 -39 -39
pound 2 20 -39 -39 hardware8
pounds 3 18 -39 -39 plumbing8
pour 2 16 -1 -39
poured 2 31 -39 3
powder 4 28 -39 -12 paint7
power 2 -6 -39 -39 electrical7
pr 1 23 19 -39 hardware8
press 2 4 9 -2
pressure 3 11 -39 6 plumbing7
pretty 2 -15 -39 -2 hardware6
price 1 -5 -39 -39
primary 1 18 3 -39
prime 2 17 -39 -39 paint8
primed 3 40 1 1 lumber8
primer 4 40 -39 1 paint10
print 1 4 -39 -39
probably 2 -15 -39 1
problem 2 -14 -39 -1
profile 2 17 -39 14
promised 1 -1 -39 -39
proof 1 -1 -39 -39
proper 1 2 15 -39
proud 3 8 -39 -3 tile10
prv 1 40 -39 -39
psi 3 40 -39 -39 plumbing12
pt 1 31 8 -39
puddle 1 26 15 -39
pull 4 11 6 -4
pulled 5 26 -15 6 flooring6
pulling 2 12 -39 8 electrical5
pullout 1 40 -39 -39
pulls 3 32 -39 3 electrical7 hvac7
pump 3 30 -5 -39 electrical8
punch 2 11 -39 -39
punky 2 40 -39 1 lumber6
purple 1 9 -39 -39
push 3 8 -39 -39 doors8
pushed 1 8 -39 -39
put 6 10 -1 -16
putting 2 0 -39 -39 electrical9
putty 2 39 -4 -39 doors6
pvc 1 40 4 -39
qt 3 40 12 -39 paint15
quart 4 40 -39 -39 paint15
quarter 6 40 1 -14
quarters 4 30 -8 -39
quarts 1 31 -39 -39
quartz 1 35 -39 -39
quick 2 -3 10 -39
quiet 2 -1 -39 -4
quit 3 5 -39 0 plumbing5
quote 1 17 -39 -39
rack 3 27 -5 5
racked 1 37 -39 14
radiator 3 40 2 -39 paint7
rafter 1 40 -39 6
rail 4 40 -6 2 lumber10
rail's 1 40 -39 4
railing 1 30 6 6
rails 1 38 -39 -39
rain 3 14 -39 -39
rains 1 23 -39 -39
raise 2 2 0 -39
raked 1 40 4 -39
ramp 1 23 -39 -39
ran 5 20 -10 -4
range 4 26 13 -39 appliances8 hvac6
rapid 1 23 4 -39 hardware6
rated 2 39 -2 -2 electrical8
rather 1 -11 -39 -39
rattles 1 35 -39 17
raw 1 15 18 -39
ray 1 -7 -39 -39
rd 1 16 10 -39
re 4 -31 -39 -13
reach 3 9 -6 -39
read 3 -6 -39 17
reading 3 7 -39 -5
reads 3 31 -39 16 tile7 electrical7 hvac7
ready 3 -6 -11 3 paint10
real 3 -13 -5 5
rear 3 23 5 -6
rebuilt 1 31 -39 6
receipt 1 19 -39 -39
receptacle 1 40 -39 -39
receptacles 1 40 -39 8
reception 1 16 -39 -39
recheck 1 39 4 -39
recut 1 40 -39 -39
red 3 5 -5 -5 electrical5
redo 2 40 -4 -39
redone 2 40 -39 -39
reducer 2 40 -39 -39
refitted 1 40 -39 8
register 2 18 0 0
reglued 1 40 -39 3
regulator 1 38 -39 -39
rehang 1 40 -39 -39
rehung 1 40 -39 3
relief 2 15 0 0 plumbing8
remain 1 3 -39 11
remains 1 11 -39 10
remind 2 5 -39 -39 hardware6
remote 1 13 -39 3 hardware6
rental 2 30 -39 -3
reorder 2 40 -39 -39 doors7
repair 2 24 3 10
replace 2 19 -39 -39
replaced 4 37 -8 6
replacement 2 24 11 0
report 2 -1 -39 -39
required 2 20 -39 -1
reroute 1 32 8 -39
reseated 1 40 -39 13
reset 3 40 -39 -10
rest 4 2 -39 -13
restroom 1 30 16 -39
return 3 10 -12 -12
return's 1 40 -39 -39
returned 1 6 -39 -39
returns 1 16 -39 15
reveal 2 22 -39 -2
reversed 1 23 -39 8
rh 1 39 -39 -39
rick 2 12 -39 -39
ridge 2 26 -39 -3 roofing10
riding 1 0 -39 8
right 6 -13 -5 -1 roofing8
rigid 2 33 -39 -39
rim 2 33 -39 -39
ring 4 17 -8 -5 tile8 concrete5
rings 2 10 -39 -39
rink 2 34 -39 22 paint14
rip 2 14 -39 -39 lumber8
ripped 3 19 -39 10 doors8
rise 2 14 -39 6
riser 2 40 -39 -39
riser's 1 40 -39 -39
risers 2 40 -39 -39
rm 3 40 0 -39
ro 1 30 4 -39
road 2 -4 -39 -39
robe 1 18 14 3 hardware7
rock 3 11 -12 -39
rocked 1 27 -39 18 plumbing10
rocking 1 21 -39 -39 plumbing6
rocks 2 11 -39 11
rod 3 33 2 -14 hardware8
rods 2 35 -39 -39
roll 5 26 -2 -17 paint6 drywall9
rolled 3 28 -39 -7
roller 3 33 -8 -39
rollers 2 40 -39 -39 doors8
rolling 1 4 -39 -39
rolls 4 38 -3 -16 flooring8 paint9 drywall5 roofing7
roof 3 21 -6 -39 hvac7 roofing13
roofer 1 40 -39 -39 roofing11
room 6 13 8 -39 flooring7
room's 1 40 -39 -39
rooms 1 6 -39 -39
roots 1 18 -39 6
rosa 1 17 -39 -39
rot 1 16 -39 -39
rotted 3 40 -39 15
rotten 2 14 7 0 lumber9
rough 3 14 -1 -1 plumbing5
roughed 2 40 -39 14 plumbing6
round 4 19 -11 4 paint6
row 3 17 -39 -7
rows 1 31 -39 -39
rtu 1 40 13 -39
rubber 2 22 -5 -39
rubbing 1 18 -39 8
rubs 1 29 -39 19 doors9
rudy 1 40 -39 -39
ruiz 1 40 -39 -39
run 5 7 -7 4 appliances7 hvac9
run's 1 40 -39 10 lumber7
rung 1 33 -39 -39
runner 2 29 -39 -3
running 4 7 -14 4 plumbing7
runs 4 23 -14 7
rush 1 0 -39 -39
rust 3 40 -8 -1 plumbing10
rusted 3 40 -39 14 plumbing7
saddle 2 23 17 -1 plumbing8
safe 1 -13 -39 -39
sag 1 33 8 8 lumber7
sagging 2 40 -39 15
sags 2 40 -39 17 hardware5 lumber6
said 4 -10 -6 -10 electrical6
sala 1 39 -39 -39
salon 3 34 -7 13 hardware6
same 4 -2 4 -1
sample 2 14 -39 8
sand 4 32 -12 -8 concrete9 paint5
sanded 3 40 -39 -39 doors6 paint8
sander 1 39 4 -39
sanding 2 40 -39 -39 paint9
sandwich 2 13 -39 -39
sash 3 40 -10 -10 doors10
sat 3 20 -39 7
satin 3 40 8 -3 paint12
saturday 5 27 -15 -1 tile6 concrete6
save 1 -16 -39 8
saw 3 -8 -9 -39
say 4 -13 -39 -7 electrical6
saying 2 -14 -39 -39
says 5 11 -10 4
sconces 1 40 -39 -39 electrical8
scrap 2 30 -3 -39 plumbing5
scrape 2 30 -39 -2
scraped 3 40 -39 -5
scrapes 1 34 -39 13 hardware7
scraping 1 29 -39 -39
scratch 2 17 -39 3 doors8
scratched 1 19 -39 15
screed 2 40 3 -39
screen 3 21 -10 -3 doors7
screen's 1 40 8 8
screens 1 26 8 8
screw 4 26 -39 -12 hardware5
screwdriver 2 32 -39 -39
screwed 4 26 -10 1 doors5 lumber9
screws 6 40 -19 -10
scribe 3 40 -39 -39 doors5
scribed 3 40 -39 -2 doors6 lumber6
scuff 1 36 8 -39
seal 3 28 -39 -6
sealant 2 40 2 -39
sealed 4 33 -39 0 hvac7
sealer 3 40 -39 -7
seam 4 40 -12 4
seam's 1 40 -39 6
seams 1 33 -39 -39
seat 3 7 -1 -7
seat's 1 40 -39 -39
second 5 11 10 -9
seconds 1 -8 -39 8
see 5 -11 -10 -13
sees 1 -2 -39 -39
seized 1 29 -39 19
self 2 18 5 -2
semi 1 28 -39 4
send 3 2 -39 -39
sending 2 6 -39 -39 doors8
sensor 2 33 7 0 electrical7
sent 3 6 -39 -39
service 1 -9 8 -39
set 6 18 -8 7 tile5 concrete5
sets 1 11 -39 4
seven 5 23 -2 -7
seventeen 2 29 -39 -4
seventy 3 40 -39 -4
shave 1 10 -39 -39 lumber8
she 6 -10 -13 -5
she'd 1 40 -39 -39
she'll 1 40 4 -39
she's 4 40 -39 -4
sheathing 2 40 -39 -2
shed 2 23 10 -39 concrete10
sheet 4 38 -19 -13 drywall13
sheets 4 35 -39 -39 drywall16
shelf 4 40 -11 -2 lumber8
shellac 2 40 -1 -39
shelves 3 40 -39 -8 doors6
shift 1 7 -39 -39 electrical8
shim 3 40 -1 -39 doors7
shimmed 3 40 -39 4 doors6
shims 3 40 -39 -2 hardware6
shingles 2 40 -39 -39
shipped 1 21 -39 -39
shoe 3 16 6 3 plumbing6
shoes 1 -5 -39 -39
shoot 2 -10 -39 -39
shop 5 25 -14 -39 hvac5
short 6 25 -13 4
shorted 2 40 -39 1
shot 3 1 -39 12 plumbing5
should 4 -14 -12 -12
show 2 -15 -39 10
showed 2 8 -39 7
shower 4 25 -2 -39 plumbing6
showing 1 4 -39 11
showroom 1 34 -39 -39
shows 2 10 -4 14
shut 4 5 -39 -17 plumbing6
shutoff 2 40 -39 13 plumbing8
shuts 1 28 -39 -39
shwr 1 40 8 -39
shy 3 22 -39 -8
side 6 20 -4 8 roofing6
side's 1 40 -39 -39 plumbing5
sides 3 25 -4 -10 doors6
siding 2 40 -39 -39
sign 2 0 8 -39
signed 2 9 -2 -39
signs 1 6 -39 -39
silicone 4 40 -39 -7 tile10 plumbing6
sill 4 40 -3 -39 doors11
silver 1 5 -39 -39
since 3 -4 -39 10
single 2 0 7 0 electrical8
sink 5 38 5 -39 plumbing6
sinks 1 27 -39 8
sir 2 -24 -39 -39 plumbing8
sister 2 -8 -1 -39 lumber9
sistered 2 40 -39 -39 lumber11
sit 4 -2 -39 4 tile5
site 2 17 -39 -39
sits 4 33 -39 12
sitting 4 14 -39 4 tile6
six 6 23 -2 -11 hvac7
sixteen 4 40 1 5 concrete8
sixteenth 3 40 0 -39 hardware8
sixteenths 4 40 -7 -39 doors5
sixty 4 40 -12 -9
size 3 16 -39 -5
skim 2 40 -39 -39
skimmed 1 40 -39 1
skin 1 -3 8 -39
skip 1 8 4 -39
skirt 1 13 -39 -39
skirting 2 40 -4 -39
skirting's 1 40 -39 4
slab 3 40 -39 -5 concrete9
slab's 1 40 -39 -39
slabs 1 40 -39 -39
slams 1 27 -39 13
slate 2 28 1 -39
sleeve 2 30 -39 11 paint7
slid 1 33 -39 8
slide 2 16 -39 -39
slider 3 40 -6 -39
slider's 1 40 6 -39
slides 2 34 -39 3
sliding 1 20 8 -39
slip 2 16 -5 1 plumbing10
slit 1 22 -39 -39
slope 2 36 -39 5
slopes 1 30 -39 15
slow 3 6 1 5 plumbing12
slurry 1 40 -39 6
small 3 2 11 -7
smell 2 1 -3 -39
smells 2 11 -39 -2
smoke 3 13 -11 -39
smokes 1 23 -39 -39
smooth 2 12 -39 -39 hardware8
snaked 2 40 -39 1 plumbing8
snap 1 11 3 -39
snapped 3 33 -39 14 hardware7
snow 1 2 6 -39
snug 1 32 -39 4
snugged 3 40 -39 -2 plumbing9
so 8 11 -13 3
soap 1 11 4 -39
sock 1 12 -39 -39
socket 2 38 -39 -39 appliances11 electrical6
sockets 2 40 1 -39
soffit 3 40 -3 -9 hvac10
soffit's 1 40 -39 -39
soft 4 23 -14 1 doors8
soil 1 16 6 -39
solder 1 40 -39 -39
solid 4 27 -14 2 hvac6 drywall10
some 4 -17 12 -1
somebody 5 8 -39 4 flooring5 roofing5
somebody's 3 40 -39 -39
something 2 -30 -39 -1
sometime 1 -1 -39 -39
somewhere 2 -2 -39 -3
son 1 -26 -39 -39
soon 1 -17 -39 -39
sooner 1 -2 -39 -39
sorry 3 -17 -39 3 tile7 lumber7
sort 1 -13 -39 -39
sorted 2 34 -39 -1 plumbing5
sound 2 -2 2 9 tile8
sounds 1 -14 -39 17
south 2 1 20 -39 lumber7
space 1 -3 -39 -39
spacer 2 40 -39 -39 plumbing6
spacers 1 40 -39 -39
spare 3 18 8 1 electrical5
sparky 2 34 -5 -39 electrical10
speaking 1 -8 -39 -39
spec 1 34 -39 6
special 1 -16 -39 -39
spice 1 17 19 -39
spin 2 18 -3 -39
spins 2 35 -39 10
spitting 1 20 8 8
splash 3 34 4 0
splice 2 40 -39 -2 electrical6
spliced 1 40 -39 -39
split 4 24 -11 5 lumber6
sponge 1 17 -39 -39
spoon 1 14 8 -39
spot 3 13 -4 -39 doors6
spots 2 21 -2 -39
spout 2 40 -7 -7 plumbing11
spray 2 25 6 6
sprayed 2 38 -39 8 doors12
sprayer 1 40 8 -39
spraying 1 30 -39 -39
spring 3 15 0 4 doors9
springs 1 16 -39 -39
sq 3 40 1 -39 lumber8
square 4 25 1 -16 tile5 electrical6
squared 1 27 -39 -39
squeak 1 30 -39 -39
squeaks 2 38 -39 8
ss 1 26 6 6
st 2 7 13 -39
stack 2 28 -39 -4
stack's 1 40 8 8
stacked 1 30 4 -39
stain 4 38 -7 -3 lumber7
stained 2 37 11 11 tile10
stainless 2 40 10 -1
stair 4 40 11 -39 lumber12
stairs 4 28 -3 -39 lumber11
stairwell 2 35 5 -39
stand 2 -13 -39 -39
standing 3 5 1 -5
standpipe 1 40 -39 -39
stands 2 12 -39 14
staple 2 39 -39 -39 electrical11
stapled 1 38 -39 -39
staples 1 40 -39 -39 electrical6
start 4 -2 -7 -3 tile8
started 1 -12 -39 3
starting 1 -8 -39 -39
starts 2 4 7 11
stat 2 34 -39 8 electrical8
static 2 27 -39 -39 plumbing7
station 1 -4 -39 3
stay 3 -8 -39 7 doors8
stays 3 22 -9 14 electrical5
steam 1 12 11 -39
steamed 1 26 -39 -39
steel 1 7 6 -39
stem 1 32 1 1 plumbing9
step 3 5 -10 -39
steps 2 15 -39 -39
stick 4 11 -14 -14
sticking 2 14 -39 12
sticks 4 31 -14 10 appliances6
sticky 1 16 -39 8 plumbing8
stile 2 40 -39 1
still 6 7 -39 8
stock 2 12 -2 12
stone 3 17 -11 -39
stone's 1 40 -39 -39
stood 1 7 -39 10
stool 1 26 3 -39
stools 1 36 -39 -39
stop 4 -8 -4 -14
stopped 2 2 -39 -3
stopper 1 38 6 6
stopping 1 6 -39 -39
stops 2 17 -39 1 doors6 plumbing6
store 4 11 -39 -2
storefront 1 36 8 -39
storm 2 13 -39 -39 hardware10
story 2 -13 -39 1
stove 3 30 -7 -39 appliances9 electrical7
straight 4 8 -13 -2
straighten 1 10 -39 -39
straightened 1 20 -39 -39
strainer 1 40 6 -39 plumbing9
strap 2 25 -39 -39
strapped 2 30 -39 11
straps 1 29 -39 -39
street 2 -3 7 -4
stretch 1 11 4 4
stretched 1 25 6 22
strike 3 17 2 -1 hardware9 doors6
strike's 1 40 -39 6 hardware6
string 1 13 -39 4
stringers 1 40 -39 -39 lumber8
strip 4 30 -14 -1 flooring8 paint6
stripped 4 40 2 13 hardware10
strong 2 -3 -39 1
structural 2 37 -39 -39
stub 1 37 -39 16
stuck 3 13 -12 7 plumbing6
stud 3 32 -39 -39 hardware5 lumber5
studs 3 40 -11 -39 lumber7
study 2 6 -2 -39 doors11
stuff 3 -6 -8 -8
stuffed 1 12 -39 8
sub 2 21 8 -39
subfloor 2 40 -3 -39
subfloor's 1 40 -39 -39
suction 1 17 -39 -39
suite 2 18 10 -39
sump 2 40 -39 -39
sun 2 -1 -39 -39
sunday 3 15 -3 -39
sunroom 2 40 8 -39
super 2 9 -39 -39
supplier 3 40 -39 -39
supplies 1 10 -39 6 plumbing9
supply 4 27 -3 -13 plumbing11
supposed 3 -1 -39 -4
sure 1 -30 -39 -39
surround 1 24 -39 -39
susan 2 8 17 6 doors9
svc 1 40 -39 -39
sw 2 40 12 -39
swap 4 40 -6 -1 hvac8
swapped 4 40 -17 5 electrical6 plumbing5 roofing7
swapping 1 35 6 -39
swear 1 -8 -39 -39
sweats 1 28 -39 19
sweep 3 28 -39 3 doors8
sweet 2 -6 -39 -39 doors9
swept 1 18 -39 -39
swing 2 15 -5 -39
swings 2 30 -39 -39 doors8
switch 3 19 -10 4 electrical11
switches 1 23 -39 -39
table 2 -4 7 -39
tack 2 35 -2 -2 flooring11
tacky 2 34 -39 4
tae 1 40 -3 -3 lumber6
tag 2 18 -39 -39
tagged 1 32 -39 3
tailpiece 1 40 3 10
take 5 -13 -19 -19 tile7
taken 1 -13 -39 -39
takes 2 -1 -3 -3
taking 1 -18 -39 -39
talk 3 -17 -39 -39
talking 1 -25 -39 -39
tall 3 18 10 -39
tank 3 23 -5 -39 plumbing9
tank's 1 40 -39 -39
tap 3 26 9 -3
tapcons 1 40 -39 -39
tape 5 26 -11 -14 paint7 drywall7
taped 4 40 -14 1
tapped 1 21 6 -39
tea 1 -1 10 3
tear 2 11 -39 -39
tee 2 32 -39 12 plumbing9
tees 1 40 -39 -39
tell 5 -11 -39 -3
temp 2 35 2 11 plumbing5
template 3 40 -39 5 lumber9
templated 1 40 -39 13
temporary 1 11 22 -39 lumber8
ten 6 21 -1 -5
tenant 3 40 -39 -39
termite 1 33 -39 -39
test 4 13 -7 5 electrical5
tested 3 28 -39 10 electrical9
tester 1 40 -39 6
testing 1 7 -39 -39
text 2 25 -39 -39
texture 1 33 -39 -39
th 4 11 -3 -39
than 4 -8 -1 -8 tile8
thank 2 -26 -39 -39
that 8 -10 3 -1
that'll 2 40 -39 -39
that's 6 40 -28 4
thats 2 27 -39 -39
the 9 8 15 -11
their 3 -11 15 -11 paint5
them 6 -4 -3 -8
then 6 0 -2 -18 concrete7 paint8
there 6 -8 -21 0
there's 6 40 -19 -1
theres 2 40 -3 10
thermostat 3 40 5 -39
they 6 -10 -27 3
they'll 1 40 -39 -39
they're 5 40 -39 0 lumber5
they've 2 40 -39 -5
thick 3 25 7 -39 paint9
thin 2 12 -39 -39
thing 5 -7 -9 -39
things 2 -18 -39 -4 electrical6
think 4 -22 -39 -39
thinset 2 40 -39 0 hardware7
third 4 18 7 -11 tile6
thirds 1 35 -39 -39
thirteen 3 36 7 -3 lumber7
thirty 6 40 -9 0 appliances7 lumber5
this 5 -21 -8 -5
tho 1 40 -39 -39
those 5 3 -5 -6
though 4 5 -39 5
thought 2 -24 -39 -39 doors6
thousand 1 -4 -39 -39
thread 1 21 -39 -39
threaded 1 40 3 -39
three 7 20 0 -12
threshold 3 39 -7 0
threw 1 -1 -39 -39
through 5 6 -39 -2
throw 2 -1 -39 -5 hardware5
thru 3 40 6 3 hvac6 paint8
thu 2 40 -39 -4
thumb 1 9 -39 -39
thurs 4 40 -39 5 tile6 paint7
thursday 6 40 -11 -4 concrete8 drywall7
tie 1 0 -39 4 hardware8
tied 2 13 -3 3 plumbing5
ties 1 15 4 4 lumber7
tight 4 18 -39 -8
tighten 1 28 -39 -39 hardware7
tightened 3 40 -39 -6
til 2 26 -39 6
tile 6 40 -9 -5 tile8 flooring6
tile's 2 40 -39 0
tiles 3 40 -4 0 tile6
till 6 20 -20 3 tile11 concrete7
timber 1 24 8 -39
time 4 -17 -39 -8
times 2 -9 -39 -3
tin 2 26 -39 -5
tip 2 8 -39 1
tips 1 12 -39 8
tmrw 4 40 -39 10
to 8 -9 -2 -2
toast 2 7 -39 -39
toaster 1 22 6 -39
today 5 7 -8 3 tile10 concrete7
toe 3 27 -10 -10
together 2 -12 -39 -39
toggle 2 40 1 -39 hardware6
toggles 2 40 -39 -39
toilet 4 29 -9 -19 tile5 plumbing8
toilet's 1 40 -39 -39
told 4 -4 -17 -39 electrical8
tomorrow 7 19 -11 2 tile6 concrete9 paint7 drywall6
tonight 4 -3 -14 -1
tony 1 -4 -39 -39
too 6 -1 -20 6
took 5 7 -39 2 flooring6
top 5 21 3 -7
tops 1 20 -39 3
tore 2 22 -39 13
torn 3 26 -39 13 appliances11 plumbing6
total 2 6 -39 -39
touch 4 11 -17 -7 electrical6
touched 1 6 3 -39
touching 2 14 0 -39 doors6
toward 2 15 -3 -3 doors6
towel 3 25 -39 -39 hardware6
town 1 -18 -39 -39
track 3 15 -12 1 doors12
traffic 1 5 -39 -39
trailer 1 14 -39 -39
transition 1 24 -39 -39
trap 4 29 1 0 plumbing11
traps 1 20 6 -39
trash 2 10 -39 -39
travelers 1 26 -39 -39
tray 2 25 -3 7
tread 2 38 -39 2 lumber6
treads 3 40 -39 1 lumber9
treated 2 11 18 0 lumber12
trench 1 28 -39 -39
tried 1 -18 8 -39
trim 5 40 -13 2 paint7
trim's 1 40 -39 -39
trimmed 2 40 -3 7 doors8
trims 1 40 -39 -39
trip 3 5 -39 -39
tripped 2 26 -39 15 electrical9
trips 2 27 -39 16 electrical12
truck 5 22 -8 -11 concrete6
trunk 1 10 -39 -39
try 2 -15 -3 -3 hardware8
tub 5 40 1 -15 plumbing5 paint8
tub's 2 40 1 -39 plumbing6
tube 5 36 0 -20 paint13
tubes 4 40 -5 -39 paint12
tubs 1 32 -39 -39
tues 2 40 -39 10
tuesday 5 32 -39 -20
turn 4 -1 -39 -7
turned 3 7 -10 3 plumbing5
turnover 1 35 -39 -39
turns 2 5 -39 -2
twelfth 1 37 -39 -39
twelve 5 36 1 -1 drywall6
twelves 1 39 -39 -39
twentieth 1 37 -39 -39
twenty 6 40 -11 -6
twice 3 7 -39 1
twisted 1 15 -39 -39
two 8 20 8 -7
type 2 5 -39 3
uh 4 -5 -11 0 appliances6 drywall6
um 3 2 -3 -13 hardware5
under 6 17 -4 12 plumbing5
undercut 1 40 -39 13
undermount 1 40 -39 -39
underneath 2 19 -4 3
union 2 12 -39 -39
unit 4 24 -4 -4 appliances5 plumbing6
units 2 14 -39 -39
unless 1 -11 -39 6
unopened 2 40 -39 5
until 5 6 -19 5
up 8 3 -18 2 roofing5
update 1 18 -39 -39
uphill 1 34 13 6
upper 2 20 4 -3 doors5 lumber5
uppers 3 40 -39 -39 lumber6
ups 1 24 8 -39
upside 1 12 -39 8
upstairs 4 18 -17 6
upstand 1 40 -39 -39
us 4 -17 -14 -39 paint9
use 4 2 -10 -39 tile6 drywall9
used 6 15 -22 -1
utility 2 39 1 -39 doors6
vac 2 40 1 -39
vacuum 1 22 3 3
vacuumed 1 35 8 -39
valve 5 40 -9 -2 tile7 plumbing8
valve's 1 40 -39 6
van 4 16 -39 -39
vanity 3 40 1 -39
vanity's 1 40 -39 -39
vapor 1 37 -39 6
varnish 1 40 -39 -39
veneer 1 34 -39 -39
vent 4 40 -5 -3 roofing10
vent's 1 40 -39 -39
vents 1 33 3 -39
very 2 -26 -39 4
vinegar 1 31 -39 -39
vinyl 3 40 8 -39 tile8
visit 1 -4 -39 -39
vlv 1 40 -39 -39
volt 2 40 5 -39
volts 1 32 -39 -39 hardware6
vs 1 20 -39 -39
wainscot 1 40 -39 -39
wait 4 -12 -39 -12
waiting 3 -4 -39 -39
waits 1 20 -39 11
walk 3 0 -39 -10
walked 2 6 -39 -3
walking 1 -9 -39 -39
walks 2 12 -39 -39
wall 7 35 -6 -4
wall's 3 40 0 4
wallpaper 1 23 -39 -39
walls 4 27 -3 -16 lumber6
walnut 2 38 12 -39 lumber8
wanna 1 -28 15 -39
want 6 -9 -25 -13 concrete6 drywall5
wanted 3 -12 -39 -1
wants 6 13 -7 -1
wardrobe 1 19 11 -39
warm 1 -1 11 -39 plumbing6
warped 1 27 8 15
warranty 1 35 -39 6
was 7 -5 -28 14 hvac8
wash 2 9 -3 -39 plumbing7
washed 1 12 -39 -39
washer 4 40 -3 -5 plumbing11
washers 2 40 -39 -39
wasn't 1 40 -39 3
wasp 1 32 -39 -39
waste 2 7 -4 -39
watch 1 -24 -39 -39
water 5 15 -4 -7
water's 2 40 -39 6
waterlogged 1 40 -39 17
watt 1 26 15 -39 electrical6
wax 4 34 -39 -39 tile6 plumbing6
way 5 -9 -39 -39 electrical7
ways 1 -1 -39 -39
wc 2 40 -39 -39
we 6 -14 -6 1 concrete6 drywall6
we'd 1 40 -39 -39
we'll 3 40 1 1
we're 5 40 -6 -2
we've 1 40 -39 -39
weak 1 2 6 -39
weather 2 6 -39 -39
weatherstrip 2 40 -39 7 doors10
wed 3 40 -39 6
wednesday 5 38 -13 -4 tile5 flooring7
weds 2 40 -39 10
week 4 4 -15 -39
weekend 2 2 -39 -39 plumbing7
weeks 2 -5 -1 -39
weep 2 24 -39 -39 plumbing8
weeping 3 37 -7 11 plumbing10
weeps 2 40 -39 13 plumbing11
weight 2 12 -5 5 hardware9
well 4 -22 -39 -8
went 5 6 -39 10 concrete5 paint6
were 4 -16 -39 17
west 1 -1 22 -39
wet 4 22 4 -5 drywall8
what 4 -31 -39 -11 concrete6
what's 2 40 -39 0
whatever 1 -18 6 13
when 6 -5 -25 -3 concrete6
whenever 2 7 -39 11 plumbing5
where 5 -10 -14 8 tile5
whether 1 -2 3 -39
which 4 1 -6 6
while 3 -8 -39 -1
whip 1 14 -39 10
whistling 1 17 -39 8
white 5 14 8 -3 tile5 flooring5 paint12
who 2 -32 -39 -39
whoever 3 12 -39 0 plumbing7
whole 5 3 3 -39
why 2 -31 -39 -39 doors7
wide 4 25 -7 -39 doors6
wider 1 28 4 -39
width 1 38 4 -39
wife 2 -16 -39 -39
will 5 -10 -2 3 concrete7
wind 1 -1 -39 -39
window 5 24 1 -10 doors7
window's 2 40 -39 -2
windows 3 19 -39 -39 doors5
winter 1 4 -39 -39
wiped 2 23 -39 -39
wire 4 25 -39 -2 electrical13
wire's 1 40 -39 -39
wired 3 31 -2 10 electrical11
wires 2 21 1 -39 electrical6
with 7 -2 4 2
within 2 4 -39 -2 lumber7
without 3 -7 5 5
wobble 1 40 -39 10
wobbles 1 40 -39 13
won't 5 40 6 15 appliances5 doors7
wont 2 40 14 12 plumbing5
wood 4 24 2 -14 lumber6
wool 1 26 -39 4
work 3 -17 -6 4 electrical6
worked 1 -11 -39 -39
working 2 -14 -39 -39
works 3 7 -10 3 electrical7
worktop 2 40 14 -39 plumbing7
worn 1 17 -39 10
worst 1 -6 -39 -39
would 3 -26 -39 -39
wouldn't 2 40 14 13
wrap 2 17 -3 -39
wrapped 2 23 -5 1
wrench 1 24 -39 -39
write 2 -5 -39 -39
wrong 4 -1 6 -11 electrical5
wrote 1 -4 -39 -39
ya 1 -12 -39 -39
yard 3 20 -2 -2
yards 1 13 -39 -39 concrete12
yeah 3 -30 -39 0
year 1 -18 4 -39
years 2 -19 -39 -39
yellow 2 9 -39 -39
yep 1 -3 -39 -39
yes 2 -35 -39 -39
yesterday 2 -1 -39 -2
yet 4 1 -39 2 appliances7
you 6 -29 -11 -2 landscape6
you'd 2 40 -39 -39
you're 1 40 -39 -39
your 4 -31 2 0 hardware6
zero 1 4 -39 -39
zip 1 19 3 -39
zone 2 16 -39 -39 plumbing5
`;
