import type { Sheet } from '../sheet.ts';

/** Doors, windows, glass, cabinets. */
export const DOORS: Sheet[] = [
  {
    kind: 'fixture',
    counter: 'doors',
    lines: `door; puerta, door leaf; @each
interior door; passage door, six panel door, hollow core door; @each
exterior door; entry door, front door, back door, side door; @each
solid core door; @each
prehung door; prehung, pre hung door, pre-hung; ~pre hung up, pretty hung; @each
slab door; door slab; @each
french door; @each
double door; @each
bifold; bifold door, bi-fold; ~by fold, buy fold; @each
bypass door; sliding closet door; @each
pocket door; pocket door kit; ~pocketed door; @each
barn door; @each
dutch door; stable door; @each
storm door; @each
screen door; ~screen store, scream door, screen dour; @each
patio door; sliding door, slider, sliding glass door; ~slide in door, sliding dour, slighting door; @each
closet door; @each
cabinet door; @each
fire door; fire rated door; @each
hollow metal door; steel door; @each
cased opening; @each
garage door; overhead door, roller door, up and over door; ~garbage door, garage dough; @each
side light; sidelight, sidelite; @each
transom; transom window; ~tran some, transome, ransom, trance um; @each
attic stair; attic ladder, loft ladder, pull down stairs; @each
pet door; dog door, cat flap; @each
window; ventana, window unit; @each
double hung; double hung window, single hung; @each
casement; casement window; ~case mint, casemate; @each
awning window; hopper window, awning; @each
slider window; sliding window; @each
picture window; fixed window; @each
bay window; bow window; @each
egress window; ~aggress window, egrets window, egress winnow; @each
replacement window; insert window, pocket window; @each
basement window; @each
garden window; @each
storm window; secondary glazing; @each
sash; window sash; ~sach; @each
window screen; screen, insect screen, flyscreen, bug screen; @each
shutter; plantation shutter, storm shutter; @each
blind; shade, roller blind, roller shade; @each
curtain rod; drapery rod, curtain; @each
cabinet; gabinete, cupboard, carcass, cabinet box, casework; ~cabin it, cab net, cabinette, cab in it, cabin ette, cabin net; @each
base cabinet; lowers, drawer base; @each
wall cabinet; upper cabinet, uppers; @each
sink base; @each
pantry cabinet; tall cabinet, tall unit; @each
island cabinet; @each
corner cabinet; blind corner; @each
built in; builtin; @each
bench seat; window seat, banquette; @each
locker; mudroom locker, cubby; @each
filler strip; cabinet filler, scribe molding, scribe strip; @each
toe kick; toekick, kickboard, plinth; ~toll kick, tow kick, token kick, toe cake, tokick, toe kit, tokek; @each
end panel; cabinet side panel, finished end; @each
face frame; @each
drawer; drawer box; ~draw box; @each
drawer front; @each
jamb; door jamb, door frame; ~jam, jams, door jam, door jams, doorjam, dough jam; @each
jamb extension; extension jamb; @each
mullion; mull post, muntin, grid; ~muting, mutton, mountain bar, million, mull yon, mull in, mullein, mull ian, mule ian; @each
sill; window sill, stool, window stool, door sill, cill; ~seal board, window seal, window cell, window still; @each
door threshold; @each
glass; glazing, pane, vidrio, window pane; @each
insulated glass unit; igu, double glazing, glass unit, sealed unit; @each
tempered glass; safety glass, laminated glass; @each
acrylic sheet; polycarbonate, acrylic panel; @sheet
glass shelf; @each
glazing bead; glazing strip, setting block; @ft
access panel; access door, hatch, access hatch; @each
window film; frosted film; @roll
column wrap; @each
mantel; mantle, mantelpiece, mantel shelf; @each
stair part; volute, gooseneck; @each
door unit; prehung unit; @each
storefront; storefront glass; @each
door lite; glass lite, glass insert, lite kit; @each
door stile; stile, stiles, lock stile, door core; @each
clerestory; fixed lite, jalousie, tilt and turn; @each
double glazed unit; sealed glass unit, double glazed units; @each
nailing fin; nail fin, nailing flange; @each
jamb liner; window liner; @each
sill nose; sill horn, sill extension; @each
window weep; weep hole; ~weak hole, wee pole, weep whole; @each
plexiglass; plexi, acrylic glass; @sheet
door buck; window buck, buck; @each
base unit; kitchen unit, sink unit, drawer unit, oven housing, oven tower, larder unit, larder; @each
drawer bank; drawer stack; @each
linen tower; linen cabinet; @each
cabinet run; run of cabinets; @each
bookcase; bookshelf, entertainment center, media cabinet; @each
window bench; mudroom bench; @each
hutch; buffet; @each
desk; built in desk, reception desk; @each
bunk bed; murphy bed, wall bed; @each
display case; workstation, bar back; @each
carcase; cabinet back, cabinet bottom, cabinet end; @each
beam wrap; coffer, coffered ceiling, ceiling medallion, medallion; @each
built in robe; wardrobe unit, robe; @each
window box; flower box; @each`,
  },
];
