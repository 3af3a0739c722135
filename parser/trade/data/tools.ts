import type { Sheet } from '../sheet.ts';

/** Tools and plant, own or rented. */
export const TOOLS: Sheet[] = [
  {
    kind: 'tool',
    lines: `drill; cordless drill, taladro, power drill
impact driver; impact, impact gun
hammer drill; ~hammered drill
rotary hammer; sds drill, sds
right angle drill; angle drill, hole hog
screw gun; drywall gun
drill press
core drill; core rig, coring machine; ~corps drill
circular saw; saw, sierra; ~circle saw, secular saw, circulars all
table saw
miter saw; mitre saw, chop saw, sliding miter saw, compound saw; ~might or saw, minor saw, mider saw, might her saw, meter saw, mighter saw, mite or saw
track saw; plunge saw
jigsaw; jig saw; ~gig saw
recip saw; reciprocating saw, demo saw
band saw; portable band saw
oscillating tool; multi tool, multitool, oscillating saw; ~oscar lating tool, isolating tool, oscillate in tool, ossilating tool
tile saw; wet saw, bridge saw; ~tile sauce
tile cutter; snap cutter, score and snap
tile nipper; nippers
coping saw
hand saw; drywall saw, keyhole saw, jab saw
hacksaw; hack saw
concrete saw; cutoff saw, cut off saw, demo saw concrete, walk behind saw, slab saw
chain saw; chainsaw
pipe cutter; tubing cutter, pvc cutter, ratchet cutter
grinder; angle grinder, amoladora
tuckpoint grinder; mortar rake
router; trim router, laminate trimmer; ~rooter
planer; power plane, hand plane, block plane
chisel; wood chisel, cold chisel, cincel; ~chisle
hammer; framing hammer, martillo, claw hammer
sledgehammer; sledge, sledge hammer, marro
mallet; rubber mallet; ~mallard
nail set; nail punch
pry bar; flat bar, wrecking bar, crow bar, cat's paw, crowbar; ~pride bar, pribar
screwdriver; phillips, flathead, desarmador; ~screw drive her
hex key; allen wrench, allen key, hex wrench
wrench; spanner, adjustable wrench, llave inglesa; ~rench
pipe wrench; ~pipe ranch
basin wrench; ~bass in wrench
tongue and groove pliers; slip joint pliers, water pump pliers
socket set; ratchet, ratchet wrench, sockets set
torque wrench; torque screwdriver; ~talk wrench, torch wrench
strap wrench
pliers; needle nose, lineman pliers, linesman pliers; ~plyers
locking pliers
wire stripper; strippers, cable ripper
fish tape; fish rod, glow rod; ~fist tape
punch down tool; punchdown
cable tester; network tester, toner, tone generator
crimper; crimp tool, crimpers; ~creamper
press tool; pro press, press gun
pex tool; expander tool, pex expander, cinch tool; ~pecks tool
go no go gauge; crimp gauge
torch; propane torch, plumbing torch; ~porch torch
heat gun
soldering iron
pipe threader; threading machine
pipe bender; conduit bender, tube bender; ~conduit bend her
plunger; ~plunge her
snake; drain snake, auger, drain auger, drum machine, closet auger; ~drain steak, snick
jetter; ~jet her
sewer camera; drain camera, inspection camera, borescope
trowel; margin trowel, pool trowel, finishing trowel; ~trowl, trial, troll
notched trowel; notch trowel, half inch notch, quarter inch notch; ~notched towel, not trowel, notch towel, knotched trowel
grout float; float trowel, rubber float, float tool; ~grow float, grout flow, growth float, ground float, grout flute
bull float; mag float, magnesium float, darby; ~bowl float
edger; concrete edger, groover; ~etch her, edge her
screed board; screed bar, straightedge, straight edge
hawk; plaster hawk
taping knife; drywall knife, six inch knife, twelve inch knife, taping knives
mud pan tool; mud tray
putty knife; scraper, five in one; ~puddy knife, putty night, patty knife, buddy knife, putty nice, potty knife
banjo; automatic taper
corner tool; corner trowel
drywall rasp; rasp
drywall lift; panel lift, board lift
t square; drywall square
hopper; texture gun, hopper gun
mixing paddle; mixer drill, paddle mixer, mixing drill
cement mixer; concrete mixer, mixer machine, revolvedora
caulk gun; caulking gun, sealant gun; ~cock gun, chalk gun, cough gun, cog gun, cork gun
foam gun; ~phone gun
sander; orbital sander, random orbit sander, palm sander; ~sandor
pole sander
belt sander
drum sander; floor sander, floor buffer, buffer
dustless sander; drywall sander
paint sprayer; sprayer, airless, spray rig, airless sprayer
pump sprayer; garden sprayer
nailer; nail gun, framing nailer, pistola de clavos; ~nail gone, nail gum, mail gun
brad nailer; finish nailer, pin nailer; ~bread nailer
roofing nailer
flooring nailer; cleat nailer
stapler; staple gun, hammer tacker, slap stapler; ~staple her
powder actuated tool; nail shooter
compressor tool; air compressor; ~air compress her
air hose; hose reel
extension cord; extension lead, power strip; ~extension chord
spider box; temp power, temporary power, power distribution box
work light; halogen light, light tower, headlamp, flashlight; ~flesh light
generator; ~general rater
heater; salamander, space heater, torpedo heater
box fan; drying fan
vacuum; shop vac, shop vacuum, wet dry vacuum, vac, aspiradora, dust extractor; ~shop back
hepa vac; hepa vacuum; ~heap a vac
level tool; torpedo level, four foot level, six foot level, spirit level, nivel, two foot level
laser level; laser, cross line laser, rotary laser; ~lazer
transit; builder's level, optical level
plumb bob; ~plum bob, plump bob
string level; line level
tape measure; measuring tape, flexometro, cinta; ~tape major, tape measured
laser measure; laser distance meter
speed square; framing square, combination square, rafter square
angle finder; bevel gauge, t bevel, protractor
calipers; caliper, feeler gauge
chalk line; snap line, chalk box; ~chock line, chuck line, talk line, chalk lion
scribe tool; compass scribe, scriber
stud finder; stud sensor; ~stud binder
moisture meter; ~moister meter
voltage tester; tester, non contact tester, voltage pen, tick tracer
multimeter; meter reader, volt meter, clamp meter; ~multi meter reader
outlet tester; plug tester
circuit tracer; breaker finder
manometer; pressure gauge, gauge set, manifold gauge; ~manometre
combustion analyzer; gas detector, gas sniffer
thermal camera; infrared camera, ir thermometer
vacuum pump; micron gauge
recovery machine; refrigerant recovery
ladder; step ladder, stepladder, extension ladder, escalera, a frame ladder; ~lather
scaffold; scaffolding, staging, andamio, rolling scaffold; ~scaffle, scaffold in, scaffold ink
plank staging; walk board, pump jack
sawhorse; saw horse, saw horses, trestle, burro; ~sore horse
workbench; miter stand, saw stand
step stool; bench step, work platform
harness; safety harness, lanyard, fall arrest; ~harnest
wheelbarrow; barrow; ~wheel barrel, wheel borrow
hand truck; dolly, cart, appliance dolly, sack truck
panel carrier; drywall cart, glass lifter, suction cup
shovel; spade, pala, trenching shovel
post hole digger; posthole digger, clamshell digger, digging bar
pick axe; mattock, pico
rake; landscape rake, rastrillo
broom; push broom, escoba; ~brume
mop; squeegee
sponge; grout sponge, esponja
utility knife; knife, razor knife, box cutter, cutter knife
tin snips; snips, shears; ~ten snips, tin snaps
siding shear; siding cutter
brake tool; sheet metal brake, metal brake
bolt cutter; bolt cutters
clamp; bar clamp, c clamp, spring clamp, sargento; ~clamped her
knee kicker; carpet stretcher, power stretcher; ~knee kick her
pull bar; tapping block
floor roller; hundred pound roller
floor scraper; ride on scraper, stripper machine
pressure washer; power washer, hidrolavadora
steam cleaner; wallpaper steamer, steamer
jackhammer; breaker hammer, demo hammer, chipping hammer, rompedora; ~jack hamper
plate compactor; compactor, tamper, jumping jack, plate tamper; ~plate compact her
skid steer; skidsteer, loader; ~skid steel
excavator; mini excavator, mini ex, digger; ~excavate her
backhoe; tractor; ~back ho
trencher; trench digger; ~trench her
power auger; earth auger, one man auger
stump grinder; wood chipper
lift; scissor lift, boom lift, aerial lift, cherry picker; ~scissors lift
forklift; telehandler, pallet jack
chain hoist; come along, winch, hoist
jack tool; bottle jack, screw jack, toe jack
concrete pump; pump truck, line pump
concrete vibrator; vibrator
power trowel; trowel machine, helicopter
crane; boom truck; ~crain
dump truck; dump trailer, trailer, lorry, tipper
dumpster; skip bin, roll off, bin, skip; ~dumpstar, dump star
debris chute; trash chute
portable toilet; site toilet
site fence; temporary fence
fire extinguisher
heat shield; flame cloth, fire blanket
radio; two way radio
label maker; labeler
tool box; tool bag, gang box tool, job box
truck; work truck, pickup truck, ute
trim puller; nail puller
dead blow hammer; dead blow
side cutters; diagonal cutters, dikes, cable cutters
cartridge puller; handle puller
flaring tool; flare tool, swaging tool
reamer; deburring tool
tap and die; thread chaser, threader
propane bottle; propane
striker; flint striker
solder gun; plasma cutter
vise; pipe vise, bench vise, tri stand
jig; hinge jig, pocket hole jig, pocket jig, shelf pin jig, drill guide
third hand; support pole, t brace
circle cutter; rotary tool, cutout tool
miter box; mitre box
nibbler; hand seamer, siding brake
rivet gun; pop riveter, riveter
shingle remover; shingle stripper, roof ripper, roofing hatchet
roofing gun; siding gun, framing gun, finish gun, trim gun, brad gun, flooring gun, powder gun, pinner
air chuck; blow gun
dust collector; dust shroud, dust extraction
sanding pole; drywall stilts, stilts
jointer; router table
work table; drywall bench
seam setter; vacuum cups
power buggy; concrete buggy
hod; mortar box
hand float; wood float, sponge float, fresno
brick jointer; joint raker
flat box; angle head, corner flusher, taping tools
spreader; glue spreader
steam stripper; spray gun, airless gun, hvlp
brush spinner; paint pole
sausage gun; glue gun, hot glue gun
grout tool; grout removal tool
knee boards; kneeboards
seam iron; seaming iron, carpet awl
vinyl cutter; laminate cutter, floor shear
hygrometer; thermometer, infrared thermometer, temp gun, thermal imager
gauges; refrigerant scale, refrigerant gauges, vacuum gauge, test gauge, air gauge
leak detector; sniffer, anemometer
coil comb; fin comb
wire tracer; wire puller, cable puller, tugger, fish stick
cable reel; wire caddy
hand bender; conduit reamer, knockout tool, knockout set
tone and probe; fusion splicer, label printer
rebar scanner; wall scanner, metal detector, stud detector
drain machine; drain bladder
digital level; box level, water level
tripod; measuring wheel, story stick
steel tape; long tape, folding rule, ruler
sliding bevel; contour gauge, profile gauge, marking gauge, try square
awl; bolster, brick set, files
sharpener; whetstone
blowing machine; insulation machine, foam rig
hop up; ladder stabilizer, scaffold tower
fall protection; lifeline, rope grab
safety net; debris net, netting
traffic cones; cones, barricades, barricade
temp pole; light stand
lute; hoe, mortar hoe, garden hoe
axe; hatchet, machete, loppers, pruners
weed whacker; strimmer, lawn mower, hedge trimmer
log splitter; tiller, sod cutter, seed spreader
post pounder; post puller, fence stretcher
rammer; trench rammer, wacker
bulldozer; dozer, grader machine
boring machine; hydrovac, vac truck
flatbed; van, work van, box truck
manlift; man lift, gantry, block and tackle
slings; shackles, rigging, cribbing
scarifier; shot blaster, sandblaster
dump bag; trash can, garbage can
porta potty; porta john, portaloo
storage container; shipping container, sea can
tool chest; tool belt, pouch
wash station; water jug
walkie talkie; drone
hand tools; power tools`,
  },
];
