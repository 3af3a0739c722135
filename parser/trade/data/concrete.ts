import type { Sheet } from '../sheet.ts';

/** Concrete, masonry and stone. */
export const CONCRETE: Sheet[] = [
  {
    kind: 'material',
    counter: 'concrete',
    lines: `concrete; concrete mix, ready mix, redi mix, cemento, concreto, readymix; ~concert; @bag, yd
fast setting concrete; quick set concrete, fence post mix, post mix; @bag
high strength concrete; five thousand psi mix, crack resistant concrete; @bag
hydraulic cement; water stop cement, plugging cement; @bucket
non shrink grout; precision grout, anchoring cement; @bag
concrete patch; vinyl patch, concrete repair, patching mortar; @bag, bucket
concrete resurfacer; resurfacer; @bag
cement; portland cement, white cement; ~cemen, see mint; @bag
mortar; mortar mix, type s, type n, mortar bed, mezcla, masonry mortar; ~mortor, martyr, border mix; @bag
lime; hydrated lime, lime mortar; @bag
masonry cement; @bag
pointing mortar; tuckpoint mortar; @bag
gravel; crushed stone, grava, crushed rock, three quarter stone, clear stone, quarter minus; ~grovel; @yd, ton, bag
stone base; road base, base rock, class five, hardcore, crusher run, sub base, mot type 1, aggregate base; @yd, ton
drain rock; pea gravel, pea shingle, drain stone; @yd, bag
riprap; rip rap; @ton
decomposed granite; dg, stone dust, screenings; @yd
sand; masonry sand, arena, sharp sand, bedding sand, play sand, builders sand; @bag, ton
paver sand; polymeric sand, jointing sand, poly sand; ~paper sand, polymer sand; @bag
rebar; re bar, varilla, reinforcing bar, reo, number four bar, number four rebar; ~ree bar, read bar, reboard, rebarb, re-bore; @stick, each
rebar chair; bar chair, rebar support; @bag
tie wire; rebar tie; @roll
rebar cap; @each
wire mesh; welded wire, mesh, remesh, reinforcing mesh; ~wire mess; @sheet, roll
diamond lath; lath, stucco lath; @sheet
stucco netting; chicken wire, stucco wire; @roll
fiber reinforcement; concrete fiber; @bag
form; form board, form lumber, shuttering, formwork; @each
form oil; release agent, form release; @gal
form tie; snap tie; @box
tube form; form tube, pier form, concrete tube; @each
concrete pier block; deck block, pier block; @each
paver; paving stone, paving slab, slab paver, porcelain paver; @each
paver edging; paver restraint; @each
flagstone; bluestone, patio stone; @ton, each
brick; ladrillo, face brick, common brick, clay brick; ~brik; @each
thin brick; brick slip, brick veneer; @box
fire brick; firebrick, refractory mortar; @each
cmu; cinder block, concrete block, breeze block, bloque, besser block, block wall unit; ~c m u; @each
glass block; @each
capstone; coping stone; @each
brick tie; wall tie, masonry tie; @box
weep vent; weep hole cover; @each
control joint filler; @ft
stucco; render; ~stuck oh, stuck go, stooko; @bag
scratch coat; @bag
base coat; brown coat; @bag
finish coat stucco; color coat, stucco finish; @bag
eifs; synthetic stucco; ~eefs; @bag
weep screed; stucco stop; @stick
expansion joint; expansion joint material, isolation joint, expansion strip; @ft
concrete sealer; sealer, masonry sealer, driveway sealer; ~ceiler, sea lure, stealer; @bucket
crack filler; concrete crack filler, joint sealer, self leveling sealant; @tube
acid stain; concrete stain; @gal
concrete dye; cement color, integral color; @box
muriatic acid; concrete etcher, etch; @gal
curing compound; retarder, cure and seal, curing blanket; @bucket
concrete bonder; concrete bonding adhesive, acrylic bonder; @gal
stone veneer; veneer stone, cultured stone, ledger stone, manufactured stone, stone; @box
geotextile; landscape fabric, filter fabric, weed barrier; @roll
waterstop; water stop, bentonite strip; @ft
dampproofing; foundation coating, foundation waterproofing, dimple board, drainage mat; @bucket, roll
asphalt; cold patch, blacktop, tarmac, asphalt patch; ~ash fault, asfalt; @bag, ton
window well; window well cover; @each
bollard; steel bollard, wheel stop; @each
steel column; lally column, jack post, adjustable post; ~lolly column; @each
helical pile; helical pier; @each
threshold ramp; @each`,
  },
];
