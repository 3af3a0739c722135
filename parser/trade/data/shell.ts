import type { Sheet } from '../sheet.ts';

/** Less usual goods of masonry, ground works, openings, roofs and walls. Common practice, no source. */
export const SHELL: Sheet[] = [
  {
    kind: 'material',
    counter: 'concrete',
    lines: `flue cap; @each
refractory cement; @bucket
type s mortar; @bag
type n mortar; @bag
type m mortar; @bag
paver base; @bag
ledgestone; @sq ft
bond beam block; lintel block; @each
block fill; cinder block fill; @cu yd
closed cell backer; @ft
brick acid; masonry wash, efflorescence cleaner; @gal
etching acid; @gal
brick sealer; siloxane sealer; @gal
anchor epoxy; rebar epoxy; @cartridge
crack injection kit; crack filler kit; @kit
fiber mesh; synthetic fiber; @bag
dowel basket; @each
dowel bar; @each
stamped mat; @each
parking bumper; @each
expansion joint filler; joint filler; @ft
ground thaw blanket; @each
form clamp; @each
lime putty; @bucket
mortar mesh; mortar deflection; @roll
half block; @each
facing brick; @each
reclaimed brick; used brick; @each
clay flue liner; flue tile; @each
pipe bollard; @each
machine grout; @bag`,
  },
  {
    kind: 'material',
    counter: 'landscape',
    lines: `septic riser; tank riser; @each
riser lid; @each
distribution box; d box; @each
leach line; leach field pipe; @each
infiltrator chamber; @each
effluent filter; @each
manhole ring; manhole frame; @each
root barrier; @roll
hose bib vacuum breaker; @each
pergola bracket; pergola kit; @kit
paver edge restraint; @ft
construction fence; snow fence, safety fence; @roll
construction mat; mud mat, swamp mat; @each
dewatering bag; dirt bag; @each
wattle; @roll
holding tank; @each
quarry dust; @ton
joint sand; @bag
soaker hose; @roll
leaf mould; @cu yd
terminal post; @each
privacy panel; @each
gravity latch; fork latch; @each
tension bar; @each
armour stone; @ton
zone valve box; @each
segmental block; @each`,
  },
  {
    kind: 'material',
    counter: 'doors',
    lines: `glazing point; glaziers point; @box
obscure glass; frosted glass, rain glass; @sq ft
wire glass; @sq ft
screening; screen mesh; @roll
drip cap; window head flashing; @each
skylight curb; @each
shower door sweep; @each
mirror mastic; mirror adhesive; @tube
patio door track; sliding track, bottom track; @each
glass shim; @each
butyl glazing tape; @roll
sash rope; @ft
spiral balance; @each
block and tackle balance; @each
sash lift; @each
cam lock; @each
casement operator; @each
screen frame; @each
grille bar; muntin bar; @each
mull strip; @each
solar tube; light tube; @each
frameless door; shower enclosure; @each
garage lift cable; lift cable; @each
pull plate; @each
magnetic holder; @each
surface bolt; @each
flush bolt; @each
door coordinator; @each
pivot hinge; floor pivot; @each
floor closer; @each
euro hinge; @each
hinge pin stop; floor stop; @each
double acting hinge; @each
slider roller; @each`,
  },
  {
    kind: 'material',
    counter: 'drywall',
    lines: `faced batt; fiberglass batt; @bag
unfaced batt; @bag
acoustic panel; sound panel; @each
base coat plaster; cement plaster; @bag
gypsum plaster; @bag
plaster washer; plaster button; @bag
plaster weld; bonding liquid; @gal
expansion bead; control joint bead; @each
flexible corner tape; inside corner tape; @roll
tee grid; main tee grid; @each
wall mold; wall angle grid; @each
froth pack; @kit
eps board; @sheet
blown cellulose; @bag
reflective insulation; foil bubble; @roll
sound sealant; @tube
resilient clip; @box
intumescent caulk; @tube
fire putty pad; @each
shaft board; coreboard; @sheet
wire lath; @sheet
flex bead; flexible corner bead; @each
sill foam; @roll
drywall hatch; @each`,
  },
  {
    kind: 'material',
    counter: 'roofing',
    lines: `roof plate; seam plate, insulation plate; @box
tapered insulation; tapered iso; @sheet
downspout strap; @each
rain chain; rain diverter; @each
siding block; mount block, light block; @each
dimensional shingle; @bundle
gutter apron; @each
diverter flashing; @each
continuous vent; @each
plastic cement; @can
standing seam panel; metal roof panel; @each
plastic cap nail; @box
snow rail; @each
half round gutter; @ft
leader pipe; @each
siding panel; @square
undersill trim; utility trim; @each
fascia cover; fascia metal; @each
brake metal; @roll
composite trim; @each
roof drain strainer; @each
seam sealant; @tube`,
  },
];
