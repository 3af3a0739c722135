import type { Sheet } from '../sheet.ts';

/** Less usual hardware, metal, millwork, paint and safety goods, and the tools and flaws that go with them. Common practice, no source. */
export const SUNDRIES: Sheet[] = [
  {
    kind: 'material',
    counter: 'hardware',
    lines: `tube steel; round tube; @ft
steel plate; bearing plate; @each
strap steel; @ft
box section; @ft
c channel; @ft
expanded metal; @sheet
checker plate; diamond plate, tread plate; @sheet
perforated metal; perf sheet; @sheet
welding rod; stick electrode; @box
welding wire; mig wire, flux core wire; @spool
argon bottle; welding gas; @bottle
cold galv; galvanizing spray; @can
turnbuckle; @each
cable railing kit; railing cable; @kit
wire rope; aircraft cable; @ft
wire rope clip; @each
shoulder bolt; @each
hex head bolt; cap screw; @box
nylock; nyloc; @box
rod coupler; @box
ready rod; @each
cap nut; acorn nut; @box
cush clamp; strut strap; @each
hook and eye; @each
cup hook; screw hook; @each
s hook; @each
safety chain; jack chain; @ft
combination lock; @each
wardrobe rail; @each
rod flange; @each
leg leveler; levelling foot; @each
bumper pad; cabinet bumper; @pack
desk grommet; wire grommet; @each
blind rivet; @box
snap toggle; @box
stud anchor; expansion anchor; @box
mask filter; respirator cartridge; @pack
ear protection; @box
rubber gloves; @box
bunny suit; tyvek suit; @each
boot covers; @box
safety cone; traffic cone; @each
fall harness; body harness; @each
shock lanyard; @each
ridge anchor; @each
barricade tape; @roll
dust wall; zip wall; @kit
bait station; mousetrap, rodent bait; @each
kitty litter; oil dry, absorbent; @bag
rock salt; ice melt, de icer; @bag
kerosene; heater fuel; @gal
bar oil; chain oil; @gal
two stroke mix; @gal
brake cleaner; contact cleaner; @can
all purpose cleaner; @gal
shop rag; shop towel; @box
cam strap; @each
bungee cord; @each
mold cleaner; mildewcide, fungicide; @gal
upside down paint; inverted paint; @can
trisodium phosphate; @box
oscillating blade; multitool blade; @each
demo blade; sawzall blade; @pack
carbide bit; @each
hex driver; nut driver bit; @each
hepa filter; vac filter, shop vac bag; @each
string light; temp light; @each
wire cup; @each
hook and loop disc; sanding pad; @box
scouring pad; @pack
quick connect air; air fitting; @each
temp cord; @each`,
  },
  {
    kind: 'material',
    counter: 'lumber',
    lines: `light rail molding; @ft
cabinet end panel; decor panel; @each
crown riser; riser molding; @ft
floating shelf; @each
rail bolt; newel bolt, newel mount; @each
baluster shoe; picket shoe, baluster boot; @each
rail fillet; shoe rail fillet; @ft
casing set; door casing set; @set
slat wall; slatwall, acoustic slat; @sheet
edge tape; veneer sheet; @roll
baltic birch; @sheet
homasote; pressboard; @sheet
counter support; countertop bracket, knee bracket; @each
seam kit; seam filler; @each
dowel pin; fluted dowel; @bag
loose tenon; @bag
joint biscuit; @bag
dowel plug; @bag
shaker door; @each
drawer face; @each
mirror cabinet; @each
handrail rosette; trim rosette; @each
stringer bracket; stringer hanger; @each
stringer skirt; @each
wall guard; outside corner guard; @each
wainscot cap; @ft
bed molding; @ft
batten strip; @ft
masonite; @sheet
formica top; postform top; @each
touch up marker; @each`,
  },
  {
    kind: 'material',
    counter: 'paint',
    lines: `spar urethane; @qt
auto filler; bondo; @can
paint bucket; @each
faux glaze; @each
flat paint; @gal
trim enamel; gloss enamel; @gal
adhesion primer; @gal
oil primer; @gal
sanding sealer; @qt
pre stain; @qt
plastic wood; @can
nap roller; @each
sizing; @gal
popcorn patch; orange peel spray; @can`,
  },
  {
    kind: 'defect',
    lines: `settled unevenly; differential settlement
oil canning; oil canned
hazed over
back fed; backfed
reverse polarity
root bound; roots in the line
bellied line; belly in the line, back graded
out of plane; proud of plane
tape showing; joint banding
tape bubble; bubbled tape, blistered tape
door sag; dropped door, sagging door
chalking; chalky
telegraphed
picture framing; flashing sheen
burnt contacts
knocking pipes; hammering pipes
siphoned
popped nail
fogged glass; blown seal
lifted edge; lifting edge
painted over
pinched line
chafed; fraying
soaked through
nuisance trips
frost heaved
condensating
cold pour
off line`,
  },
  {
    kind: 'tool',
    lines: `knockout punch
channel locks
grease gun
taping banjo; bazooka
post jack; floor jack
ladder jack; stand off
chisel set
leaf blower
string trimmer
drain spade; round shovel
wire brush
spud wrench
chain wrench
stillson
toilet auger
sewer machine
refrigerant gauge
flow hood
aviation snips
hand brake
seam roller; j roller
vacuum lifter; glass cup
mud knife
panel hoist
vibrating screed
wacker plate
mortar mixer
georgia buggy
track loader
lever hoist
baker scaffold; pump jack scaffold
jobsite saw
thickness planer
power planer
burke bar; wonder bar
maul
ball peen
center punch
vice grips
nut driver
pancake compressor
inverter generator
soldering gun
pinch bar
bow rake
pole saw
five in one tool; painters tool
receptacle tester
pin meter
storey pole
string line level
swage tool
gauging trowel`,
  },
];
