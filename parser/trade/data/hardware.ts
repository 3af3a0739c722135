import type { Sheet } from '../sheet.ts';

/** The hardware counter: fasteners, glues, tapes, ironmongery. */
export const HARDWARE: Sheet[] = [
  {
    kind: 'material',
    counter: 'hardware',
    lines: `screw; wood screw, tornillo, construction screw; ~scrooge, skrew; @box
structural screw; timber screw, ledger screw; @box
trim screw; trim head screw, finish screw; @box
sheet metal screw; self tapper, self tapping screw; @box
machine screw; electrical screw, 6-32 screw, eight thirty two screw; @box
cabinet screw; pocket screw, euro screw; @box
hinge screw; @box
deck screw; decking screw, exterior screw, coated screw; ~debt screws, deck's crew, neck screw, deck screwed; @box
stainless screw; stainless steel screw; @box
concrete screw; masonry screw, blue screw anchor; @box
roofing screw; gasketed screw, washered screw, metal roof screw; @box
nail; clavo, clavos, framing nail, common nail, galvanized nail, ring shank nail, box nail, sinker, sixteen penny, eight penny, ten penny; ~nale, framing mail, flaming nail; @box
finish nail; brad, brad nail, pin nail, eighteen gauge nail, trim nail, casing nail, fifteen gauge nail, sixteen gauge nail; ~finished nail, brat nails, bread nail, brad nell, bra nails, brat, finished nell, finish mail; @box
coil nail; siding nail; ~coal nail; @box
roofing nail; clout nail, cap nail, button cap; @box
joist hanger nail; hanger nail, connector nail, teco nail; @box
duplex nail; double headed nail; @box
masonry nail; concrete nail, cut nail; @box
hand nail; loose nails; @box
drive pin; @box
staple; crown staple, narrow crown staple; ~stapel; @box
bolt; hex bolt; @each, box
carriage bolt; coach bolt; ~courage bolt, garage bolt, carriage bulbs, carriage bold, carriage bowl, carrots bolt, carriage bought; @each
lag bolt; lag screw, lag, coach screw; ~leg bolt, leg screw, lag bowl, lag bold; @each, box
through bolt; machine bolt; @each
anchor bolt; j bolt, foundation bolt; ~anchor bold, anger bolt, anchor bowl, anker bolt; @each
eye bolt; eye screw, screw eye; ~i bolt; @each
u bolt; ~you bolt; @each
toggle bolt; toggle, strap toggle; ~goggle bolt, toddle bolt, toggle bold, toggle bowl, taco bolt; @pack
wedge anchor; expansion bolt; ~wedge anger; @box, each
sleeve anchor; drop in anchor; ~sleep anchor; @box, each
drywall anchor; plasterboard fixing, self drilling anchor, hollow wall anchor, butterfly anchor; ~dry well anchors, dry wall anger, drywall anger, drive all anchor; @box
wall plug; plastic anchor, plug anchor, masonry plug; ~wall bug; @box
masonry anchor; anchor, concrete anchor; ~anker, anger, ankor; @box, each
epoxy anchor; chemical anchor, resin anchor, threaded rod anchor; @each
threaded rod; all thread, allthread, studding; ~thread a rod, threaded rot, all threat; @each
washer; fender washer, flat washer, lock washer; ~watcher, wash her; @each, box
nut; hex nut, lock nut, coupling nut, wing nut; @each
rivet; pop rivet; @box
joist hanger; hanger, face mount hanger, skewed hanger; ~joist hangar, hangar, joyce hanger, choice hanger, joyce hangar; @each
hurricane tie; rafter clip, hurricane clip, truss clip; ~hurricane dies, hurricane thai, hurry cane tie, hurricane type; @each
post base; post anchor, stand off base, post shoe; @each
post cap; post to beam connector; @each
strap tie; strap, strapping, coil strap; @each, roll
framing angle; angle clip, angle bracket connector; @each
nail plate; plate protector, stud guard, stud shoe; @each
mending plate; tie plate, truss plate; @each
hold down; holdown, tension tie; ~hold on down; @each
deck tension tie; lateral tie; @each
bracket; l bracket, angle bracket, corner brace, angle iron; @each
shelf bracket; @each
corner bracket; flat brace; @each
construction adhesive; adhesive, subfloor adhesive, panel adhesive, grab adhesive; ~at he's of, adhesif, add he sieve, add his of, a he sieve; @tube
wood glue; glue, carpenter's glue, pva glue, yellow glue; ~would glue; @bottle
super glue; ca glue, instant glue, mitre glue; @bottle
contact cement; contact adhesive; @can
epoxy; two part epoxy, epoxy resin, anchoring epoxy; ~a poxy, epoxie, apoxy; @tube, kit
threadlocker; thread locker; @bottle
penetrating oil; lubricant, silicone spray, graphite, grease; @can
duct tape; gaffer tape, cloth tape; ~duck tape; @roll
foil tape; foil backed tape, aluminum tape, aluminium tape; ~foyle tape; @roll
double sided tape; carpet tape, mounting tape; @roll
packing tape; stucco tape; @roll
flagging tape; caution tape, barrier tape; @roll
flashing tape; window tape, sill tape, butyl tape, seam tape, joist tape, window flashing tape; ~flash in tape; @roll
spray foam; foam, expanding foam, window foam, can foam, canned foam, gap foam, foam gun can; ~spray phone, spray form, spray fome; @can
weatherstrip; weather strip, weatherstripping, weather stripping, draught excluder, foam strip; ~whether strip, weather trip, weather strapping, whether stripping, weather tripping; @each, roll
door sweep; sweep; ~door sweet, door swept, door sleep; @each
contractor bag; trash bag, rubbish bag, rubble sack, garbage bag, bin bag; @box
blade; saw blade, multi tool blade, recip blade, jigsaw blade, miter saw blade; ~blayed; @each
diamond blade; tile blade, masonry blade; @each
grinding wheel; cutoff wheel, cut off wheel, cutting disc, grinding disc, cup wheel, flap disc; @each
razor blade; knife blade, utility blade; @pack
drill bit; bit, twist bit; @each
spade bit; paddle bit, flat bit; @each
hole saw; hole cutter; ~whole saw; @each
step bit; @each
masonry bit; sds bit, hammer bit; ~mason re bit, masonry bet, mason free bit; @each
auger bit; ship auger; @each
driver bit; screw bit, star bit, square bit, phillips bit, impact bit; @pack, each
forstner bit; hinge bit; ~force near bit; @each
tile bit; diamond bit, diamond hole saw, core bit; @each
router bit; round over bit; @each
respirator; mask, dust mask, p100, n95, respirator filter, cartridge filter; ~perspirator; @each
gloves; nitrile gloves, work gloves, glove; @box
safety glasses; goggles, eye protection; @each
ear plug; ear muff, hearing protection; @box
knee pad; kneepads; @each
hard hat; @each
hi vis vest; safety vest; @each
first aid kit; @each
hose; garden hose; @each
chain; @ft
cable tie; zip tie; ~zip tight; @bag
felt pad; bumper, felt bumper, bumper dot; @pack
rope; paracord, twine, string line, mason line, mason's line; @roll
bungee; ratchet strap, tie down; @each
tarp; tarpaulin, blue tarp; ~tarb; @each
plastic bucket; bucket, pail; ~pale; @each
marker; pencil, carpenter pencil, chalk refill; @each
battery; nine volt battery, aa battery; @pack
padlock; @each
lockbox; key box, lock box; ~locks box; @each
16d; 8d, 10d, 6d, 16 penny, 8 penny, 10 penny, 6 penny, sixteens; @box
ring shank; ring shanks; @box
pins; micro pins, 23 gauge pins; @box
molly bolt; molly, lag shield; @each
fixing; frame fixing, hammer fixing; @box
anchoring resin; resin, chem set; @tube
cotter pin; hitch pin, clevis pin, hinge pin; ~hinge pen, hinge pine; @each
spring; extension spring; @each
post stirrup; stirrup; @each
steel angle; l angle, aluminum angle, steel tube, square tube, steel channel, strap iron, flat bar steel; @each
hot melt; glue stick; @pack
dry lube; spray lube, silicone lube, graphite lube, garage door lube, cutting oil; @can
tape; clear tape, vapor tape, poly tape, red tape, hazard tape, grip tape, non slip tape, foam tape, glazing tape, stretch tape; @roll
flashing roll; roll flashing; @roll
door seal; brush seal, bulb seal, compression seal, threshold seal, brush strip, garage door seal, door gasket; @each
rain deflector; drip strip; @each
astragal; door astragal; ~astro gal; @each
bags; demo bags, rubble bags, heavy duty bags, leaf bag, dust bag, vacuum bag; @box
diamond wheel; diamond cup, flap wheel, wire wheel; @each
grinder disc; cutting disk, sanding disk; @pack
countersink; countersink bit, nut setter, bit holder, bit set; @each
shoe covers; booties, shoe cover; @box
coveralls; coverall, disposable suit, face shield; @each
carpet film; carpet protection, sticky film, floor protection roll; @roll
cardboard; plywood protection; @sheet
moving blanket; furniture blanket; @each
plastic wrap; stretch wrap, shrink wrap, bubble wrap, plastic roll; @roll
polythene sheet; six mil poly; @roll
string; mason string, nylon string, pink string; @roll
blue chalk; red chalk, line chalk; @bottle
marking paint; marking spray, spray chalk; @can
lumber crayon; crayon, keel; @each
marking flags; pin flags, survey flags; @bundle
nine volt; button battery, coin battery; @pack`,
  },
  {
    kind: 'part',
    counter: 'hardware',
    lines: `hinge; door hinge, butt hinge, bisagra, bisagras; ~hench, henge, hinch, in je, hing; @each
cabinet hinge; concealed hinge, soft close hinge, cup hinge, overlay hinge, european hinge; @each
spring hinge; self closing hinge; @each
piano hinge; continuous hinge; @each
door knob; doorknob, knob, door handle, lever set, door lever, handle, lever; ~door nob, doornob; @each
passage set; passage knob; ~passage said; @each
privacy set; privacy knob, bathroom lock; @each
dummy knob; @each
lockset; keyed entry, entry set, handleset, handle set; ~lock said, locks it, lock sit; @each
lock; keyed lock, cylinder, cerradura, chapa, smart lock, keypad lock; @each
deadbolt; dead bolt; ~dead bold, dead ball, dead bowl, debt bolt, dead vault, ded bolt, dead bull; @each
mortise lock; mortice lock, sash lock mortice; ~mortis lock, morties lock; @each
strike plate; strike, keeper, striker plate; ~strict plate, stripe plate, strike late, strike played, strike plait, strike plight, strikes late, strike blade; @each
latch; gate latch, thumb latch, slide bolt, barrel bolt; ~gate lash, get latch, gait latch; @each
cabinet catch; catch, magnetic catch, roller catch, ball catch, touch latch; @each
cabinet pull; pull, drawer pull, bar pull, cup pull; ~cabin it pull; @each
cabinet knob; cabinet handle; @each
drawer slide; slides, drawer runner, runners, soft close slide, undermount slide, drawer glide; ~draw slide, drawers lied, draw slides, drawer side, drawers slide; @pair
lazy susan; corner carousel; ~lacy susan, lazy season, lazy sue's in; @each
pull out shelf; rollout, roll out shelf, trash pull out; @each
door closer; closer, hydraulic closer; ~door closet arm, door close her; @each
panic bar; exit device, crash bar; @each
kick plate; push plate, kickplate; @each
door stop; doorstop, hinge stop, wall stop; ~door stub; @each
door viewer; peephole, peep hole; @each
door bottom; door shoe; @each
sill pan; @each
shelf standard; shelf track; @each
shelf pin; shelf clip, shelf peg; ~shelf pen; @pack
closet rod; closet pole, rod, rod bracket, rod socket; @each
closet kit; closet system, wire shelving, wire shelf; @kit
towel bar; towel rail, towel ring; ~tall bar, towel bear, tower bar, towel bore, tau bar; @each
robe hook; towel hook, coat hook, hook, hooks; @each
grab bar; grab rail; ~crab bar, grab bark; @each
toilet paper holder; paper holder, tp holder, toilet roll holder; @each
shower rod; shower curtain rod, curtain rail; ~shower curt and rod, shower curtain rot, shower curtain ride; @each
soap dispenser; paper towel dispenser, hand dryer; @each
mirror; @each
mirror clip; @pack
medicine cabinet; bathroom cabinet; @each
sash lock; window lock, window latch; ~sash luck; @each
sash cord; sash chain, sash weight; @each
window crank; window operator, crank handle; @each
window balance; sash balance; @each
sliding door track; track, barn door track, bypass track, pocket door track, track hardware; @each
sliding door roller; door roller, patio door roller, bottom roller; @each
bifold hardware; bifold pivot, bifold track; @each
bypass guide; floor guide; @each
flush pull; edge pull; @each
caster; castor, wheels, caster wheel; @each
mailbox; letter box; @each
house number; address number; @each
sign; signage, ada sign, room sign; @each
toilet partition; stall partition, partition hardware; @each
gate; side gate; @each
gate hinge; strap hinge; @pair
drop rod; cane bolt; @each
garage door spring; torsion spring; @each
garage door roller; garage door cable; @each
spline; screen spline; ~spleen; @roll
stair bracket; stair rod; @each
furniture leg; vanity leg, leveling foot, leveler foot; @each
gas strut; lid stay, lid support; @each
key; spare key; @each
lever on rose; knob set; @each
casement stay; peg stay; @each
thumb turn; thumbturn, latchbolt, latch set, deadlatch; @each
hasp; padlock hasp, hasp and staple; @each
mortise box; dust box, door reinforcer; @each
drawer insert; drawer divider, drawer dividers, drawer organizer, drawer liner, tray divider; @each
shelf support; shelf supports, standards, pilaster; @each
rod cup; rod cups, pole socket; @pair
trash pullout; pull out trash, spice pull out, corner pull out, pull outs; @each
hardware; door hardware, cabinet hardware, barn door hardware, pocket door hardware, bypass hardware, closet hardware, gate hardware, window hardware, bath hardware, deck hardware, shower hardware, fence hardware, ironmongery; @kit, each
bath accessories; bathroom accessories; @each
pivot; top pivot, bottom pivot, pivot pin; @each
door guide; roller guide, top guide, barn door guide; @each
soft close mechanism; soft close damper; @each
door holder; overhead holder, hold open, magnetic hold open; @each
door silencer; door mute, door saver; @bag
closer arm; panic hardware; @each
glass clip; glass clamp; @each
shower seal; shower door seal, shower sweep; @each
glass channel; u channel, shower channel, mirror channel; @stick
tissue holder; soap holder, toothbrush holder, recessed holder, toilet brush holder; @each
shower caddy; shower basket; @each
changing table; baby changing station; @each
peg rail; pegs, magnetic strip; @each
drapes; valance clip; @each
z clip; z clips, picture hook; @pack
gate stop; gate wheel, gate spring; @each
safety eye; garage door sensor, wall button, wall control; @each
door glide; glides, furniture glides, chair glide, adjustable feet, plinth clips; @pack
nameplate; plaque, address plaque, door number; @each
mail slot; letter plate; @each
flagpole; flag pole; @each`,
  },
];
