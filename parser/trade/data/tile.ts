import type { Sheet } from '../sheet.ts';

/** The tile counter. */
export const TILE: Sheet[] = [
  {
    kind: 'material',
    counter: 'tile',
    lines: `tile; floor tile, wall tile, field tile, azulejo, loseta; ~tyle; @box, sq ft
porcelain tile; porcelain; ~porcelin, poor slain; @box
ceramic tile; ceramic, ceramics; ~sir amic, cermic; @box
mosaic; mosaic tile, penny tile, penny round, hex tile, hexagon tile, basketweave, mosaic sheet; ~mow zaic; @sheet, box
subway tile; subway, metro tile, brick tile; @box, each
quarry tile; red quarry; @box
glass tile; glass mosaic; @sheet, box
slate tile; slate floor tile; @box
marble tile; marble; ~marbel; @box, sq ft
travertine; travertine tile; ~traver teen, travertene; @box, sq ft
limestone; limestone tile; @box, sq ft
granite tile; granite; ~granit, grain it, gran it; @box, each
terrazzo; terrazzo tile; ~taratso, terratso; @sq ft
saltillo; terracotta, terracotta tile, terra cotta; @box
encaustic tile; cement tile, hydraulic tile; @box
large format tile; large format; @box
accent tile; deco tile, border tile, listello, liner tile; @each
bullnose; bullnose tile, bull nose; ~bowl nose, bull knows, bull news, bull noise; @each
quarter round tile; jolly trim; @each
pencil liner; pencil tile, pencil trim; @each
cove tile; cove base tile, coved tile; @each
thinset; thin-set, tile adhesive, thinset mortar, modified thinset, unmodified thinset, pegamento, tile mortar, adhesive mortar, flexible adhesive, flexi adhesive; ~fin set, thin said, then set, thin sent, fence set, thin sit, fin said, then said, thins it, thinsect, thin sat, thing set, tin set; @bag
large format mortar; medium bed mortar, lft mortar; @bag
tile mastic; premixed adhesive, ready mixed adhesive; @bucket
grout; lechada, boquilla, tile grout; ~grow, growt, groud, route, grouse, growed, groat, growl; @bag
sanded grout; ~sanded grow, sanded route; @bag
unsanded grout; non sanded grout, nonsanded grout; ~unsanded grow; @bag
epoxy grout; ~epoxy grow; @kit
premixed grout; single component grout, urethane grout; @bucket
grout sealer; tile sealer, penetrating sealer, stone sealer; ~grow sealer, grout ceiler, grout seal are, grout sea lure, growth sealer, grout seal or; @bottle, qt
grout colorant; grout dye, grout pen; @bottle
grout additive; latex additive, acrylic additive; @qt
grout haze remover; haze remover, sulfamic acid; @bottle
color matched caulk; grout caulk, matching caulk, sanded caulk; @tube
backer board; cement board, backerboard, tile backer, backer, cement backer, tile backer board, fiber cement backer; ~backer bored, back a board, packer board, hardy board, hardy bored, hardly board, heart e board, hardy backer, hardly backer, back her board, bakker board, baker board, back aboard; @sheet
foam backer board; foam tile board, foam board backer; @sheet
backer board screw; backer screw, cement board screw; @box
alkali resistant tape; backer tape, cement board tape; @roll
uncoupling membrane; decoupling membrane, membrane, uncoupling mat; ~member rain, uncoupling member; @roll
waterproofing; waterproofing membrane, liquid membrane, tanking, tanking slurry, liquid waterproofing, roll on membrane; ~red card, red guard, red guarded; @bucket
waterproofing band; seam band, banding, waterproofing tape, tanking tape; @roll
crack isolation membrane; crack isolation, anti fracture membrane; @roll
self leveler; self levelling compound, self leveling compound, leveler, leveller, leveling compound, floor leveler, levelling compound, self leveling underlayment, screed compound; ~self lever, cell leveler, self level her; @bag
leveler primer; floor primer, self leveler primer; @bottle, gal
deck mud; dry pack, drypack, floor mud; @bag
pan liner; shower liner, pvc liner, shower pan liner; ~pan lighter; @sq ft, roll
foam shower pan; foam tray, shower former, wet room former; @each
foam curb; ready curb; @each
preformed niche; foam niche, niche box; @each
preformed corner; inside corner seal, outside corner seal; @each
pipe seal; mixing valve seal, pipe collar seal; @each
tile spacer; spacer, wedge spacer, tile wedge, cross spacer; ~space her, tile space her, tile pacer; @bag
leveling clip; levelling clip, lippage clip, tile leveling clip; ~leveling click; @bag
leveling wedge; lippage wedge, levelling wedge; @bag
edge trim; tile edge, tile edging, edge profile, edging trim, metal edge trim, tile trim; @stick, each
movement joint strip; movement profile, expansion profile; @stick
threshold; marble threshold, saddle, stone threshold, door saddle; ~thrash hold, fresh hold, trash hold; @each
transition strip; transition, reducer strip, t molding, reducer, door bar; ~transmission strip, transition straight, transition stripe, transition trip, reduce her, re deuce her; @each
floor heating mat; heat mat, heated floor mat, underfloor heating mat, radiant mat, floor warming cable; @each, kit
floor sensor; floor heating sensor; @each
soap dish; corner shelf tile, shower shelf; @each
shower bench; foam bench, shower seat; @each
linear drain; line drain, trench shower drain; ~linear train, liner drain, lean ear drain, lynn ear drain; @each
tile drain grate; square drain grate; @each
border; tile border; @each
pebble; pebble tile; @sheet
hex; hexes, hexagons; @box
herringbone; chevron, arabesque; @box
zellige; handmade tile; @box
onyx; quartzite; @box
split face; splitface, stacked stone; @box
jolly; jolly edge; @each
fast set; fast set thinset, rapid set thinset, medium bed, thick bed; @bag
latex admix; admix, liquid additive; @gal
grout release; grout refresh; @bottle
stone enhancer; enhancer, impregnator, color enhancer; @bottle
tile board; cement sheet, waterproof board; @sheet
reinforcing fabric; membrane fabric, fleece; @roll
preslope; pre slope; @each
drain body; drain extension, drain extender; @each
sound mat; crack mat, decoupling mat; @roll
self leveling; self levelling; @bag
wedges; tile clips, leveling system, tile leveling system, clips and wedges; @bag
tile profile; edge strip, edging strip, tile edging strip, metal strip; @stick
heating mat; ufh, ufh mat; @kit
footrest; foot rest, corner caddy, corner bench, floating bench; @each`,
  },
];
