import type { Sheet } from '../sheet.ts';

/** Landscape, drainage, irrigation, fences. */
export const LANDSCAPE: Sheet[] = [
  {
    kind: 'material',
    counter: 'landscape',
    lines: `topsoil; top soil, soil, fill dirt, dirt, tierra; ~top soyle; @yd, bag
compost; manure, peat, peat moss; @yd, bag
mulch; bark, bark mulch, wood chip; ~munch, melch; @yd, bag
sod; turf, pasto, zacate; ~sawd; @roll, sq ft
artificial turf; fake grass, synthetic turf; @sq ft, roll
grass seed; lawn seed; @bag
erosion blanket; straw blanket, straw bale, erosion mat; @roll, each
silt fence; straw wattle; @roll
shrub; bush; @each
plants; plant, perennial, ground cover plant; @each
tree; sapling; @each
hedge; hedging; @each
planter; planter box, raised bed, flower bed; @each
irrigation pipe; irrigation line, poly tubing, lateral line; @roll
drip line; drip tubing; @roll
irrigation valve; sprinkler valve, solenoid valve; @each
irrigation controller; controller, sprinkler timer; @each
emitter; drip emitter, bubbler; ~admitter, a mitter; @each
rotor head; spray head, pop up head; @each
valve box; irrigation box; @each
drain tile; french drain, corrugated pipe, land drain, ag pipe, socked pipe, perforated pipe, perf pipe; ~french train, fringe drain, friends drain, french rain; @roll, ft
catch basin; drain box, gully, area drain; ~catch bason; @each
channel drain; driveway drain; @each
pop up emitter; drain emitter; @each
dry well; drywell chamber, soakaway; @each
culvert; culvert pipe; @ft
retaining wall block; wall block; @each
cap block; @each
geogrid; @roll
boulder; landscape rock, river rock; ~bolder; @ton, each
lava rock; decorative stone; @bag
fertilizer; fertiliser, lime pellet; @bag
weed killer; herbicide; @bottle
edging; landscape edging, steel edging, lawn edging, bender board; @ft
fence; fencing, cerca, privacy fence; @ft
chain link; wire fence, chain link fence; ~chain lake; @ft
tension wire; tension band, chain link fitting; @each
field fence; barbed wire, t post; @roll
concrete mow strip; mow strip; @ft
pergola; arbor, gazebo, pavilion; ~purgola; @each
retaining wall drain; weep pipe; @each
pool tile; pool plaster, pool coping; @each
stepping stone; @each
mailbox post; @each
solar light; @each
fire pit; @each
rain barrel; water butt; @each
loam; screened loam, planting mix, garden mix, veggie mix, bank fill; @yd
clay; subsoil; @yd
bark dust; barkdust, pine straw; @yd
hydroseed; hydro seed, clover seed, seed; @bag
grass; turf roll; @sq ft
weed mat; weed fabric, weed cloth, weedmat, garden fabric; @roll
fabric pins; fabric staples; @box
boxwood; arborvitae, hydrangea, juniper, privet, laurel, crepe myrtle; @each
ornamental grass; groundcover, annuals, roses; @each
vine; ivy; @each
stump; tree stump, root ball, tree root; @each
branches; brush pile, tree limb, limbs; @each
tree stake; tree tie, tree grate; @each
irrigation; irrigation system, drip system, drip irrigation, irrigation zone, sprinkler zone, irrigation head; @each
dripper; drip tube; @each
rotor; nozzle, sprinkler nozzle; @each
solenoid; valve solenoid; @each
hose splitter; hose end; @each
pipe sock; drain fabric; @roll
drainage; land drainage; @ft
drain inlet; yard inlet, catch basin grate; @each
drain pit; silt pit, stormwater pit; @each
infiltrator; bubbler pot; @each
swale; berm, bioswale, headwall, outfall; @ft
erosion control; erosion fabric, jute netting, wattles, filter sock, silt sock, inlet protection; @roll
gabion; gabion basket, rockery; @each
tieback; deadman, dead man; @each
decorative rock; beach pebble; @ton
fence tie; fence ties, brace band, post spike, post support; @bag
privacy slats; fence topper; @each
shade sail; shade structure, patio cover; @each
garden bed; raised garden bed; @each
pond; pond liner, fountain, water feature; @each
playset; swing set, sandbox; @each
clothesline; washing line; @each
deck box; dog run; @each
landscape lighting; uplight, uplights; @each
pool cover; pool liner, hot tub cover; @each
skimmer; pool skimmer, salt cell, chlorinator; @each
basketball hoop; hoop; @each`,
  },
];
