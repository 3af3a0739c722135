import type { Sheet } from '../sheet.ts';

/** Concrete, masonry and stone. */
export const CONCRETE: Sheet[] = [
  {
    kind: 'material',
    counter: 'concrete',
    lines: `concrete; concrete mix, ready mix, redi mix, cemento, concreto, readymix; ~concert, con creed, conk rete; @bag, yd
fast setting concrete; quick set concrete, fence post mix, post mix; @bag
high strength concrete; five thousand psi mix, crack resistant concrete; @bag
hydraulic cement; water stop cement, plugging cement; @bucket
non shrink grout; precision grout, anchoring cement; @bag
concrete patch; vinyl patch, concrete repair, patching mortar; @bag, bucket
concrete resurfacer; resurfacer; @bag
cement; portland cement, white cement; ~cemen, see mint, see meant, simmer; @bag
mortar; mortar mix, type s, type n, mortar bed, mezcla, masonry mortar; ~mortor, martyr, border mix, more tar, mort her, mortgage mix; @bag
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
rebar; re bar, varilla, reinforcing bar, reo, number four bar, number four rebar; ~ree bar, read bar, reboard, rebarb, re-bore, re bark, rebark, ray bar, reed bar, free bar; @stick, each
rebar chair; bar chair, rebar support; @bag
tie wire; rebar tie; @roll
rebar cap; @each
wire mesh; welded wire, mesh, remesh, reinforcing mesh; ~wire mess; @sheet, roll
diamond lath; lath, stucco lath; ~lathe; @sheet
stucco netting; chicken wire, stucco wire; @roll
fiber reinforcement; concrete fiber; @bag
form; form board, form lumber, shuttering, formwork; @each
form oil; release agent, form release; @gal
form tie; snap tie; @box
tube form; form tube, pier form, concrete tube; ~foam tube; @each
concrete pier block; deck block, pier block; @each
paver; paving stone, paving slab, slab paver, porcelain paver; ~paved her, pay ver, pay verse; @each
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
stucco; render; ~stuck oh, stuck go, stooko, stuck o; @bag
scratch coat; @bag
base coat; brown coat; @bag
finish coat stucco; color coat, stucco finish; @bag
eifs; synthetic stucco; ~eefs; @bag
weep screed; stucco stop; @stick
expansion joint; expansion joint material, isolation joint, expansion strip; ~expansion join, expansion joined, expanse in joint; @ft
concrete sealer; sealer, masonry sealer, driveway sealer; ~ceiler, sea lure, stealer; @bucket
crack filler; concrete crack filler, joint sealer, self leveling sealant; @tube
acid stain; concrete stain; @gal
concrete dye; cement color, integral color; @box
muriatic acid; concrete etcher, etch; @gal
curing compound; retarder, cure and seal, curing blanket; @bucket
concrete bonder; concrete bonding adhesive, acrylic bonder; @gal
stone veneer; veneer stone, cultured stone, ledger stone, manufactured stone, stone; ~stone vernier, stone van ear; @box
geotextile; landscape fabric, filter fabric, weed barrier; @roll
waterstop; water stop, bentonite strip; @ft
dampproofing; foundation coating, foundation waterproofing, dimple board, drainage mat; @bucket, roll
asphalt; cold patch, blacktop, tarmac, asphalt patch; ~ash fault, asfalt; @bag, ton
window well; window well cover; @each
bollard; steel bollard, wheel stop; ~ball hard, ball art; @each
steel column; lally column, jack post, adjustable post; ~lolly column; @each
helical pile; helical pier; @each
threshold ramp; @each
eighty pounder; @bag
rapid set; sand mix, topping mix, fiber mix, pump mix, grout mix, crack resistant mix; @bag
flowable fill; slurry fill, lean mix; @yd
core fill; cell fill; @yd
shotcrete; gunite; @yd
stamped overlay; @bag
patch mix; vinyl concrete patcher; @bag
crack injection; polyurethane injection, injection epoxy; @kit
mortar color; mortar dye; @bag
plasticizer; plasticiser, frost proofer, retarding agent; @bottle
ballast mix; all in ballast; @ton
base course; base material, 3/4 minus, three quarter minus, crush and run, bank run, road crush, type one, crusher dust, blue metal, stone screening; @yd, ton
number 57; fifty sevens, 57s, 57 stone; @ton
structural fill; clean fill, engineered fill, select fill, fill material, backfill material; @yd
bedding; pipe bedding; @yd
cobble; cobblestone, cobbles, sett, setts; @ton
rebar mat; stirrups, rebar stirrup; @each
welded wire fabric; wwf, wwm, a393, a142; @sheet, roll
joint reinforcement; ladder wire; @each
dobie; dobies, chairs; @bag
form pin; form pins, form stake, steel stake; @each
waler; walers, whaler, kicker, kickers; @each
icf; insulated form; @each
footing tube; cardboard tube; @each
keyway; wedge tie; @each
embed; embeds, baseplate, embed plate; @each
cmus; thermal block; @each
soldier course; brick course, rowlock, header course, brick ledge; @each
lintel angle; loose lintel; @each
cavity tie; mortar net; @box
airbrick; air brick; @each
damp course; dpc roll; @roll
sandstone; indian sandstone, yorkstone; @sq ft
flagging; @sq ft
curbing; kerbstone, edge restraint, granite cobble; @ft
paver spike; landscape spike; @box
stone facing; hearthstone, hearth stone; @each
fire clay; clay liner; @each
stucco mix; stucco patch, stucco bag; @bag
stucco paper; grade d paper; @roll
casing bead; stucco bead, corner aid; @stick
pebbledash; pebble dash, roughcast, monocouche, acrylic finish; @bag
render mix; render board; @bag
concrete blanket; frost blanket, burlap, wet burlap, hessian; @each
cure compound; cure spray, densifier, color hardener; @bucket
stamp mat; stamp release; @each
polyurea; foam expansion, fiber expansion; @tube
dimple mat; foundation drain board; @roll
bitumen coating; bentonite; @bucket
parge mix; parging mix; @bag
hot mix; asphalt mix, millings, asphalt millings, sealcoat, crack fill, pothole patch; @ton
steel lally; acrow prop, telepost, post shore; @each
screw pile; micropile; @each
ramp; concrete ramp; @each
well liner; area well; @each
speed bump; parking stop; @each`,
  },
];
