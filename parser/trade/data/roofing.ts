import type { Sheet } from '../sheet.ts';

/** Roofing and rainwater goods. */
export const ROOFING: Sheet[] = [
  {
    kind: 'material',
    counter: 'roofing',
    lines: `shingle; architectural shingle, roof shingle, teja, tejas, asphalt shingle, three tab; ~jingle, shingled, shing all; @bundle
starter strip; starter, starter course, starter shingle; ~starter trip; @bundle
ridge cap; ridge shingle, hip and ridge, cap shingle; ~rich cap, bridge cap; @bundle
ridge vent; ~rich vent, ridge bent, bridge vent, ridge fence, ridge went, ridge spent; @each, roll
roof underlayment; roofing felt, synthetic underlayment, synthetic felt; ~roof under lamb int; @roll
ice and water shield; ice and water, ice shield, ice barrier; ~icing water, ice in water, ice and water shelled, ice and water shill, ice in water shield, ice and order shield, isan water shield; @roll
drip edge; ~trip edge, drip hedge, drip etch, drip age, drippage, drip hitch; @stick, each
flashing; sheet metal flashing, metal flashing; ~flash in, flesh in, flesh ing, flash sing, fleshing, flashin; @each, ft
step flashing; ~steps flashing, step flesh in, step fleshing; @each
counterflashing; counter flashing, cover flashing; @each
valley flashing; valley metal, valley tin; @each
kick out flashing; kickout flashing, kickout; @each
z flashing; z bar; @stick
apron flashing; @each
headwall flashing; sidewall flashing; @stick
pan flashing; door pan; @each
chimney flashing; chimney saddle, cricket flashing; @kit
lead flashing; lead sheet; @roll
coil stock; trim coil, aluminum coil; ~coal stock; @roll
roofing cement; roof cement, tar, flashing cement, roof sealant, wet patch; @tube, can
roof coating; silicone roof coating, elastomeric roof coating; @bucket
fibered coating; aluminum coating; @bucket
roof vent; box vent, turtle vent, static vent; @each
turbine vent; whirlybird; @each
gable vent; louver vent; ~gable bent, cable vent; @each
soffit vent; eave vent, strip vent; ~sofa vent, suffit vent; @each
gutter; canal, canaleta, eavestrough, guttering; ~gut her, gut err, gutt her, gut tour; @stick, ft
downspout; leader, gutter pipe, rainwater pipe, downpipe; ~down spot, down spout's, town spout, down spat, downs bout, down scout, town spot; @stick, each
downspout elbow; gutter elbow; @each
gutter guard; leaf guard, gutter screen; @each
gutter hanger; hidden hanger, gutter bracket; @each
gutter end cap; gutter outlet, gutter corner; @each
splash block; @each
gutter sealant; gutter seal; @tube
conductor head; leader head; @each
roof sheathing; roof decking, roof deck, decking sheet; @sheet
h clip; plywood clip; @box
roof tile; concrete tile, concrete roof tile, clay tile, clay roof tile; @each
slate; roof slate; @each
metal roofing; metal panel, standing seam, roof panel, corrugated metal, corrugated panel; @each
metal roof trim; ridge metal, gable trim; @stick
closure strip; foam closure; @each
epdm; rubber roof, roofing membrane, rubber membrane; ~e p d m; @roll
tpo; tpo membrane; ~t p o; @roll
modified bitumen; mod bit, torch down, cap sheet, rolled roofing, roll roofing; ~mod bid; @roll
seam primer; bonding adhesive, lap sealant; @can
termination bar; term bar; @stick
skylight; roof window, sun tunnel, tubular skylight; ~sky like, sky late, sky lied, skylike; @each
skylight flashing kit; @kit
chimney cap; rain cap, chimney pot; ~chimney cab, chimney cup; @each
chimney; @each
reglet; ~regret, regulate, wreck let; @ft
gravel stop; @stick
roof jack; toe board, roof bracket; @each
snow guard; snow stop; @each
roof hatch; @each
parapet cap; coping, coping cap; @ft
fall protection kit; roof anchor; @each
felt; roof felt, thirty pound felt, fifteen pound felt, 30 pound felt, 15 pound felt, number thirty felt, thirty felt; ~felled; @roll
base sheet; ply sheet; @roll
leak barrier; ice dam membrane; @roll
edge metal; rake metal, eave metal, perimeter metal, rake edge metal; @stick
pitch pocket; pitch pan; ~pit pocket; @each
pipe collar; pipe jack; @each
torch on membrane; torch on, sbs, grp; @roll
cover tape; cover strip, seam cover strip; @roll
cover board; roof board, recovery board; @sheet
shake; hand split shake; @bundle
ribbed metal; five v, exposed fastener panel, corrugated iron, box profile; @each
ridge roll; ridge tile; @each
dry verge; verge tile; @each
pantile; plain tile, interlocking tile; @each
bargeboard; barge board, verge board; @each
valley board; valley tray; @each
gutter spike; gutter run, spike and ferrule; @each
outside miter; inside miter, gutter miter; @each
downspout extension; flip up extension; @each
hopper head; rainwater hopper, rainwater shoe; @each
parapet metal; coping metal; @ft`,
  },
];
