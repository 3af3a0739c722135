import type { Sheet } from '../sheet.ts';

/** The lumber yard: framing, sheet goods, millwork, decking, fencing. */
export const LUMBER: Sheet[] = [
  {
    kind: 'material',
    counter: 'lumber',
    lines: `2x2; 2x2s, two by two; @each
2x3; 2x3s, two by three; @each
2x4; 2x4s, two by four, 2 x 4, 2 by 4, two by fours; ~to buy four, too by four, two before; @each
2x6; 2x6s, two by six, 2 x 6, 2 by 6, two by sixes; ~to buy six; @each
2x8; 2x8s, two by eight, 2 x 8, 2 by 8, two by eights; ~to buy eight; @each
2x10; 2x10s, two by ten, 2 x 10, 2 by 10, two by tens; ~to buy ten; @each
2x12; 2x12s, two by twelve, 2 x 12, 2 by 12; @each
1x2; 1x2s, one by two; ~one buy two; @each
1x3; 1x3s, one by three, strapping board; @each
1x4; 1x4s, one by four, one by fours; ~one buy four; @each
1x6; 1x6s, one by six, one by sixes; @each
1x8; 1x8s, one by eight; @each
1x10; 1x10s, one by ten; @each
1x12; 1x12s, one by twelve; @each
4x4; 4x4s, four by four, four by fours; ~four buy four; @each
4x6; 4x6s, four by six; @each
6x6; 6x6s, six by six; @each
furring strip; furring, batten, lath strip, tile batten; ~firing strip, furry strip, furring straight, for ring strip, furring strap, fern strip, fur in strip; @bundle, each
lumber; timber, wood, madera, framing lumber, dimensional lumber; ~lumbar, lumper; @each
pressure treated lumber; treated lumber, pt lumber, pt wood, treated timber, tanalised timber; @each
engineered lumber; lsl, psl, engineered beam; @each
stud; king stud, wall stud, precut stud, trimmer stud, cripple; ~stut, kings dud, king stead; @each
jack stud; trimmer; ~jackstraw, jack's dud; @each
joist; floor joist, ceiling joist, deck joist; ~joice, joyce, joyces, choice, joisted, joy's, juiced, joust, joyst, choiced, joystick, juice; @each
i-joist; engineered joist; ~eye joist; @each
rim joist; rim board, band joist, rim; ~rim choice, rim joyce; @each
rafter; roof rafter, hip rafter, jack rafter; ~raft her, rapture, raptor; @each
ridge board; ridge beam; @each
collar tie; rafter tie; ~color tie, caller tie, after tie; @each
truss; roof truss, floor truss, scissor truss; ~tress, trussed, truss's; @each
blocking; block, backing, nailers, nogging, noggin, noggins, noggings, dwang; ~blogging; @each
sleeper; floor sleeper; @each
cleat; french cleat, ledger strip; ~cleet; @each
plywood; ply, cdx, subfloor plywood, sheathing, underlayment plywood; ~fly wood, ply would, plied wood, pie wood, playwood, plight wood, fly would, sheet thing, she thing, plie wood, play would; @sheet
birch ply; birch plywood, cabinet grade ply, cabinet ply, maple ply, oak ply; @sheet
marine plywood; marine ply, exterior ply; @sheet
tongue and groove plywood; t&g plywood, t and g subfloor; @sheet
osb; oriented strand board, sterling board, chipboard; ~o s b, os be, owe s b, o is b, oh is be; @sheet
mdf; medium density fibreboard, fibreboard; ~m d f, mdff; @sheet
melamine; melamine board, particle board, particleboard, furniture board; ~mela mean, melamean; @sheet
hardboard; tempered hardboard, pegboard; @sheet
luan; lauan, underlayment ply, door skin; ~lou ann, lou on; @sheet
subfloor; sub flooring, subflooring; ~sub flow, subs floor, sub flaw, some floor, sub four, suffloor, sub for floor; @sheet
baseboard; base, skirting, skirting board, base molding, base moulding, base trim; ~bass board, based board, baste board, skirting bored, skirting bird, base bored, bays board; @stick, each, ft
casing; door casing, window casing, architrave, case molding, trim casing, case moulding; ~cases, case sing, caseing, casein, case in; @stick, each, ft
trim; molding, moulding, trim board, pvc trim, trim stock, pvc board; ~tram; @stick, ft
crown molding; crown, crown moulding, cornice, coving; ~crown holding, crown mouldy, crown mold ring, crown mowing, crown melding, clown molding, crown moldy; @stick, ft
quarter round; scotia; ~quarter ground, corner round, quarter rent, water round, courter round, quarter brown; @stick, ft
shoe molding; shoe, base shoe, shoe moulding; ~shoe holding, shoe mowing, shoe mold in; @stick, ft
cove molding; cove moulding, cove; @stick, ft
base cap; @stick, ft
chair rail; dado rail; ~share rail, cheer rail, chair real, chair rale, cherry rail, chair whale, chair ale; @stick
picture rail; plate rail; @stick
panel molding; wall frame molding, picture frame molding; @stick, ft
half round; @stick
door stop molding; stop bead, stop molding; @stick
brickmould; brick molding, brickmold, brick mould; @stick
corner block; rosette, plinth block; @each
apron molding; window apron; @stick
outside corner molding; corner guard, corner trim; @stick
screen molding; screen moulding, lattice molding; @stick
beadboard; bead board panel, matchboard; ~bead bored, bee board; @sheet, each
tongue and groove; t&g, tongue and groove board; ~tongue in groove, tong and groove; @each
wainscot; wainscoting, wall paneling, wall panelling, panelling, paneling; ~wayne's coating, wayne scott, wane scoting, wayne's cot, waynes cot, wains coat, wane scott, wins cot; @sheet, each
shiplap; nickel gap; ~chip lap, ship lab; @each
decking; deck board, composite decking, decking board, five quarter decking, 5/4 decking, 5/4 board, composite board; ~decking bored; @each, ft
deck fascia; rim fascia, composite fascia; @each
hidden deck fastener; hidden fastener, deck clip; @box
picket; fence picket, paling, fence board; ~pickett, pick it, pick hit; @each
fence panel; @each
fence post; post, gate post, line post; @each
fence rail; fence stringer; @each
post cap trim; post sleeve, post skirt; @each
baluster; spindle, deck spindle; ~ballister, balisters, ballaster, ballast her, bal luster, baller ster, blusters, ballast er, spin dull, spin dell, spindel; @each
handrail; hand rail, rail, railing, top rail, guard rail, bannister, banister, guardrail, bottom rail; ~hand rale, and rail, whaling, rayling, rail in, reeling; @each, ft
rail bracket; handrail bracket, railing bracket; @each
stair tread; tread; ~thread board, stair thread, stair trade, tred; @each
riser; stair riser; ~rizer, rise her, rise or, rye ser; @each
stringer; stair stringer, carriage stringer; ~string her, stringe, stinger; @each
newel post; newel; ~new post, newell, new all post, no all post, newel pose, knew all post, newell post, nool post; @each
shim; cedar shim, packer, composite shim, plastic shim; ~chim, shem; @pack, bundle
beam; header, girder, flush beam, dropped beam; ~beem, head her, heather; @each
lvl; laminated veneer lumber; ~l v l; @each
glulam; glue lam, glued laminated beam; ~glue lamb, blue lam; @each
lintel; angle iron lintel, steel lintel, concrete lintel; ~lentil, lint all, lintle, lent all, lental, lintol; @each
steel beam; i beam, flitch plate, rsj; ~eye beam; @each
ledger; ledger board; ~leisure board, letter board, ledge her, ledger bored, leisure bored, led jer, legger; @each
sill plate stock; mudsill stock; @each
fascia; fascia board; ~fascist board, fasha, facia, fashion board, fay sha, fache, fascist, face ya, fash a, face here, facial board, fasher; @each, ft
soffit; soffit panel, soffit board, vented soffit; ~sofa, saw fit, soft it, sofit, sofet, softed, sofits, so fit, sof it, suffix, suffit, soft fit, surf it, sauf it; @each
frieze board; frieze; ~freeze board; @each
rake board; rake trim; @each
corner board; @each
siding; clapboard, lap siding, cladding, weatherboard, siding board; ~sighting, sliding siding, side in, cider siding; @each, ft
fiber cement siding; fibre cement, cement siding, fiber cement board; @each
vinyl siding; @box, each
j channel; ~jay channel; @stick
siding starter; siding starter strip; @stick
board and batten; batten siding; @each
cedar shake; wood shake, cedar shingle; @bundle
house wrap; building wrap, building paper, tar paper, felt paper, breather membrane, sarking, rain screen; ~house rap, how's wrap, has wrap, house rat; @roll
lattice; trellis; ~lettuce, lattes, lattuce, lettuce panel; @each, sheet
countertop; counter top, worktop, laminate top, bench top, solid surface top, laminate counter; ~counter stop, counted up, counter tap, contour top, counter tup; @each
butcher block; wood counter, wood worktop; @each
quartz top; quartz counter, quartz; ~courts top, courts, quarks, quorts; @each
granite top; granite counter, granite countertop; @each
plastic laminate; laminate sheet, p-lam; @sheet
edge banding; edge band, iron on edging; ~edge bending; @roll
shelf; shelving, shelf board, closet shelf; @each
dowel; wood dowel, dowel rod; ~dow well; @each
plywood strip; ripping, rip strip; @each
veneer; wood veneer; ~vineer, the near, vernier, van ear, vin ear; @sheet
stakes; wood stake, grade stake, hub stake; @bundle
railroad tie; landscape timber, sleeper timber; @each
pallet; skid; @each
channel molding; f channel, h channel, joiner channel, soffit channel, receiver channel; @stick
housewrap tape; house wrap tape, wrap tape, sheathing tape, seam wrap tape; @roll
drainage wrap; drain wrap, weather barrier, weather resistive barrier, wrb, fluid applied barrier; @roll
insect strip; bug screen strip, insect screen strip, rain screen mat; @roll
skirt board; band board, belly band, water table; @each
corbel; knee brace, decorative bracket; @each
porch flooring; porch floor board; @each
precut; precuts; @each
plate stock; plate material, bottom plate stock; @each
1x; one bys, 1x material; @each
2x; two bys, 2x material, two by material; @each
2x14; 2x14s, two by fourteen; @each
3x3; 3x3s; @each
five quarter; five quarter by six, 5/4 by 6, five quarter board; @each
scaffold board; staging board; @each
web stiffener; squash block; @each
outrigger; lookout, rafter tail; @each
fireblocking; fire block, fire blocking, draft stop; @each
bridging; cross bridging, strongback, strong back; @each
formply; form ply; @sheet
particleboard flooring; flooring grade chipboard; @sheet
hdf; mdf board, laminated board; @sheet
pvc sheet; panel board; @sheet
flat stock; s4s, casing stock, flat trim; @stick, ft
backband; back band; @stick
window stop; parting bead, parting stop; @stick
light valance; light rail, valance; @stick
toe kick skin; cabinet skin, toe skin; @each
ogee; dentil, dentil molding; @stick
stair skirt; skirtboard, winder, rail fitting; @each
balustrade; cable rail, cable railing; @ft
post wrap; post sleeve kit; @each
picture frame board; breaker board; @each
starter clip; start clip, hidden clip; @box
fence slat; slat, feather edge board, gravel board; @each
stone top; marble top, concrete top, soapstone, solid surface, tile counter, post form top; @each
remnant; stone remnant; @each
top support; countertop support; @each
door lining; door liner, lining set; @each
intumescent strip; fire strip; @stick
structural graded timber; cls, c16, c24, carcassing; @each
pine board; meranti, merbau; @each
wood bung; bung, wood plug; @bag`,
  },
];
