/**
 * The rest of the trade's words: `name; other names; ~what dictation writes`, one a line, by kind.
 */
import type { TermKind } from '../../types.ts';

export const SITE: Partial<Record<TermKind, string>> = {
  tool: `drill; impact driver, impact, hammer drill, taladro
saw; circular saw, skill saw, table saw, miter saw, chop saw, jigsaw, recip saw, reciprocating saw, band saw, multi tool, oscillating tool, sierra, tile saw, wet saw, track saw
grinder; angle grinder
level tool; torpedo level, four foot level, laser level, laser, string level, spirit level
tape measure; measuring tape
ladder; ladders, step ladder, extension ladder, scaffold, scaffolding, staging, escalera, step stool
vacuum; shop vac, hepa vac, vac
mixer drill; mixing paddle, paddle mixer
trowel; trowels, notched trowel, notch trowel, margin trowel, float trowel, grout float
sander; orbital sander, pole sander, belt sander, drum sander
nailer; nail gun, brad nailer, framing nailer, finish nailer, stapler
compressor tool; air compressor, hose reel
sprayer; paint sprayer, airless, spray rig
jackhammer; breaker hammer, demo hammer, chipping hammer, rotary hammer, sds drill
snake; drain snake, auger, drain auger, drum machine
crimper; crimp tool, press tool, pex tool
torch; propane torch
pry bar; flat bar, wrecking bar, crow bar, wonder bar
caulk gun; caulking gun
utility knife; knife, razor knife, stanley style knife
chalk line; snap line, chalk box
stud finder; moisture meter, voltage tester, multimeter, tester, meter reader, thermal camera, outlet tester, manometer
heater; heaters, space heater, salamander
generator; generators
dumpster; skip bin, roll off, bin
wheelbarrow; barrow, cart, hand truck, dolly
lift; scissor lift, boom lift
plate compactor; compactor, tamper, jumping jack
skid steer; bobcat style loader, excavator, mini excavator, backhoe, trencher
pressure washer; power washer
drywall lift; panel lift`,
  surface: `wall; walls, back wall, side wall, left wall, right wall, accent wall, knee wall, half wall, party wall, partition, partition walls, pared, paredes, retaining wall, wing wall, pony wall, shower wall, shower walls
ceiling; ceilings, techo, clg, overhead
floor; floors, flooring surface, suelo, floorboard
slab; slabs on grade, concrete slab, pad slab, concrete floor
bottom plate; top plate, sole plate, sill plate, plate, double top plate, mudsill
corner; corners, inside corner, outside corner, esquina
rough opening; opening, openings, doorway, window opening, door opening, cutout, cut out, cut-out
gap; gaps, reveal, reveals, margin, joint, joints, control joint, grout joint, seam, seams, sawcut, sawcuts, saw cuts, grout line, grout lines
hole; holes, post hole, core hole, footing hole, knockout
niche; niches, shower niche, alcove, nook
backsplash; back splash, splashback, side splash, splash
stub; stub out, stub-out, rough in, roughin, stubout, drain stub
edge; edges, lip, nosing edge, side, front edge
step; steps, stoop, landing
stair; stairs, staircase, escaleras
footing; footings, footer, pier, piers, foundation, stem wall
column; columns, pillar
valley; ridge, eave, eaves, gable, dormer, hip
surround; fireplace surround, mantel, hearth, fireplace
curb edge; kerb, apron
island; kitchen island, peninsula
crawlspace vent; foundation vent
circuit; circuits, leg, a leg, b leg, home run, feeder, neutral, hot leg
tank; tank lid, reservoir
line; lines, water line, gas line piping, supply side, cold side, hot side, main, sewer line, water supply, gas joint, water main, sewer
section; piece of siding, run, vent run, span, row of siding
frame; framing, wall framing, window frame, picture frame
finish surface; coat, coats, first coat, second coat, third coat, final coat, skim coat, prime coat, finish coat paint, base coat paint, top coat
leg; legs, flange leg
screed; pour, mud bed, mud pan, shower floor
slope; pitch, fall, grade
touch up; touch ups, touchups, touch-up
nail hole; nail holes, screw holes
fence line; post line, layout
drywall patch; patch area, repair area
water; hot water, cold water, water pressure, pressure, power, gas supply, heat, temperature, humidity, moisture, airflow, air flow, static pressure, amp draw, voltage
trim out; trim-out, rough-in inspection, punch list, punch
crack repair; crack line
slump; ticket
batt insulation area; cavity, stud bay, bay`,
  area: `kitchen; cocina, galley, kit
bathroom; bath, baño, washroom, restroom, restrooms, toilet room, ensuite, en suite, wet room, cloakroom
hall bath; hallway bath, upstairs hall bath
master bath; primary bath, main bath, master bathroom, owner's bath
guest bath; guest bathroom
half bath; powder room, half bathroom, powder bath
upstairs bath; upstairs bathroom, downstairs bath, basement bath, kids bath, pool bath
bedroom; cuarto, recamara, guest room, kids room, kid's room, nursery
master bedroom; primary bedroom, master, main bedroom, master suite
back bedroom; front bedroom, upstairs bedroom, spare bedroom, guest bedroom
living room; lounge, sitting room, great room, family room, sala, front room
dining room; comedor, dinette, breakfast nook
laundry room; laundry, utility room, lavanderia, laundry closet
mud room; mudroom, entry, entryway, foyer, vestibule, front entry, entrada
hall; hallway, corridor, upstairs hall, pasillo, landing area
closet; closets, walk in closet, linen closet, pantry, coat closet, hall closet, cupboard under stairs, wardrobe
office; study, den, home office, library, studio, oficina
basement; bsmt, cellar, sotano, lower level, rec room, basement rec room
garage; cochera, carport, bay two
attic; loft, atico
crawlspace; crawl space, crawl
deck; decks, back deck, front deck, terrace
porch; back porch, front porch, sun porch, sunroom, screened porch, veranda, lanai
patio; courtyard
back yard; backyard, yard, garden, front yard, side yard, patio de atras, back garden
driveway; drive, walkway, sidewalk, path
roof; techo de afuera, back slope, front slope
exterior; outside, north side, south side, east side, west side, front of house, rear of building, back of house
east wall; west wall, north wall, south wall, east elevation, west elevation, north elevation, south elevation
upstairs; second floor, top floor, upper floor, third floor, downstairs, first floor, ground floor, main floor
stairwell; stair hall, stairway
mechanical room; boiler room, electrical room, furnace room, mech room, plant room
shop; workshop, shed, barn, outbuilding, pole barn, greenhouse
waiting area; reception, lobby, front desk, waiting room, break room, conference room, showroom, sales floor, dressing room, storage room, store room, storeroom, classroom, server room, copy room
pool; pool deck, pool house, spa
gym; exercise room, playroom, media room, theater, theatre
wine cellar; bar, wet bar
balcony; balconies, rooftop
alley; loading dock, parking lot, side of the house`,
  role: `plumber; plumbers, plumbing crew, plomero, fontanero, plumbing guy, plumbing sub
electrician; sparky, electricista, electricians, electrical crew, spark, electrical sub, electric guy
painter; painters, pintor, painting crew, paint crew, paint guy, decorator
tile guy; tiler, tile setter, tile man, tile crew, tilers
drywall crew; drywaller, taper, rocker, drywall guy, plasterer, mudder, hanger guy, drywall guys, tapers, sheetrocker
carpenter; chippy, framer, framers, trim carpenter, finish carpenter, carpintero, carpenters, framing crew, joiner, trim guy
hvac guy; hvac crew, hvac tech, mechanical guy, ac guy, heating guy, furnace guy, hvac sub, tin knocker, duct guy
roofer; roofers, roofing crew, roof guy, techador
mason; masons, bricklayer, brickie, albañil, mason crew, stone guy
concrete crew; concrete guys, finisher, concrete guy, concrete sub, flatwork crew
floor guy; flooring guy, floor crew, flooring crew, carpet guy, carpet crew, floor installer, hardwood guy, floor guys
cabinet guy; cabinet installer, cabinet maker, cabinet shop, millwork guy, cabinet guys
countertop guy; countertop crew, counter guys, stone fabricator, fabricator, granite guy, counter guy, template guy
glass guy; glazier, glass company, mirror guy, glass shop
insulation crew; insulator, insulation guy
window guy; window company, window rep, window crew, door guy
landscaper; landscapers, landscape crew, irrigation guy, jardinero, sprinkler guy
fence crew; fence guy
gutter guy; gutter crew, siding crew, siding guy
sealer crew; sealing crew
apprentice; helper, laborer, labourer, ayudante, new guy, the kid, the new kid
inspector; building inspector, city inspector, the city, electrical inspector, plumbing inspector, inspeccion, building control, fire marshal, inspectors
owner; owners, client, customer, dueño, dueña, boss lady, landlord, landlady
homeowner; home owner, lady of the house, the lady, lady, la señora, señora, the mrs, the missus, the husband, the wife, mrs, the couple
tenant; tenants, lodger
super; superintendent, building super, site super, property manager, manager, the pm, project manager, maintenance guy, foreman, site manager
gc; general contractor, general, main contractor, builder
architect; designer, engineer, structural engineer, decorator lady, surveyor, arquitecto
adjuster; insurance adjuster, insurance company, insurance guy
supplier; supply house, lumber yard, lumberyard, the yard, tile shop, merchant, the warehouse, distributor, vendor, lab, the lab, rental yard, rental place, paint store
utility; power company, gas company, water company, utility company
low voltage guy; phone guy, cable guy, alarm guy, alarm company, data guy, it guy, av guy, security guy, network guy
appliance guy; appliance tech, appliance delivery, delivery guys, delivery driver, driver
cleaner; cleaners, cleaning crew, cleaning lady, janitor
demo crew; demo guys, hauler, junk guy, dump guy
pest guy; exterminator, termite guy
mover; movers
crew; the guys, the boys, night crew, second crew, other crew`,
  finish: `white; off white, bright white, antique white, almond, ivory, cream
gray; grey, light gray, light grey, dark gray, charcoal, silver, gris
black; matte black, flat black, oil rubbed bronze, bronze
brushed nickel; satin nickel, nickel, chrome, polished chrome, brass, stainless, stainless steel, galvanized, galv, satin brass
tan; beige, brown, bone, biscuit, sand color
clear; primed, pre-primed, unfinished, prefinished
red; blue, green, yellow, navy
treated; pressure-treated, composite
matte; matt, flat, eggshell
wet rated; exterior grade, interior grade, moisture resistant, fire rated, tempered, insulated
braided; flexible, rigid, adjustable, weatherproof
gloss finish; high gloss
left hand; right hand, left handed, right handed, lh, rh
oak; maple, pine, cedar, walnut, birch, poplar, fir, redwood, hemlock, ash wood, spruce`,
  defect: `cracked; crack, cracks, cracking, hairline crack, hairline, split, splitting, fractured
broken; broke, busted, snapped, shattered, roto, rota, smashed, broken off
leaking; leaks, leak, leaky, weeping, weeps, dripping, drips, drip, seeping, fuga, gotea, goteando, leaked, drippy, tirando agua
seized; frozen, stuck, jammed, siezed, seized up, froze up, sticking, sticks, binding, binds
loose; wobbly, wobbles, wobble, rocking, rocks, floppy, wiggles, flojo, floja, came loose, come loose, wiggly, shaky, moving around
missing; not there, never came, gone missing, didn't come, falta
rotted; rotten, rot, soft, spongy, punky, podrido, mushy, dry rot, wood rot, rotted out
swollen; swelled, swelled up, puffed up, blown out, blown, swelling
stained; water stain, water stains, discolored, discoloured, yellowed, watermark, water marks, stain on ceiling
out of level; unlevel, out of plumb, out of square, out of whack, crooked, not level, not plumb, chueco, racked, off level, wonky, sloping
dead; no power, burned out, burnt out, doesn't work, not working, won't turn on, muerto, quit, blew up, conked out, kaput
flickering; flickers, flicker, buzzing, buzzes, humming, hums, noisy, rattles, rattling, squeaks, squeaky, squeaking, squeak, noise, making noise, grinding noise, whistling, chirping, chirps, rattle, screeching, knocking
tripping; trips, keeps tripping, tripped, overheating, running warm, running hot, gets hot, arcing, shorted, short circuit, shorting out, scorched, burnt, burned, melted, sparking, sparks
slams; slamming, rubs, rubbing, drags, dragging, scrapes the floor, catches, catching, hits the trim
nail pops; nail pop, screw pops, screw pop, nail popped
chipped; chip, chips, scratched, scratch, scratches, dented, dent, dents, dinged, ding, dings, gouge, gouged, gouges, scuffed, scuff, scuffs, scuff marks, nicked, nick, scrape mark, marred
bubbled; bubbling, peeling, peels, flaking, blistered, blistering, delaminating, delaminated, lifting, lifted up, curling, curled, coming up, coming off, peeled, bubbles in, alligatoring
warped; bowed, bow, cupped, cupping, buckled, buckling, twisted, crowned, sagging, sags, sag, sagged, hump, humped, dip in, bellied, belly in, heaved, sunk, sunken, settled, crushed
torn; tore, ripped, rip in, frayed, punctured, puncture
mold; mould, moldy, mouldy, mildew, moho, black mold, mushrooms
corroded; corrosion, rust, rusted, rusty, green crud, oxidized, pitted, pinhole, pinholes, rusted out, rusting
kinked; kink, crimped flat, pinched, bent, bent up, mashed
clogged; plugged up, backed up, backing up, blocked, blockage, slow drain, draining slow, drains slow, tapado, tapada, stopped up, won't drain, gurgling, gurgles, overflowing
backwards; upside down, inside out, wrong way, reversed, hot and cold reversed, reversed polarity, wired wrong, mislabeled, wrong side
wrong size; wrong color, wrong colour, wrong one, wrong part, wrong finish, wrong model, wrong length, wrong hand, the wrong
damaged; damage, messed up, screwed up, beat up, ruined, trashed, water damage, water damaged, dañado, chewed up, chewed, shot, junk, wrecked, toast, cooked, worn, worn out, wore out, stripped, stripped out, bad splice, let go, gave out, failed, failing
hollow; hollow spot, hollow sounding, drummy, lippage, high spot, low spot, low spots, uneven, unbonded, ponding, puddling, bald spot
doesn't fit; don't fit, won't fit, does not fit, not fitting, no fit, no cabe, don't line up, doesn't line up, won't line up, misaligned, off center, off centre, doesn't match, don't match, mismatched, won't close, won't latch, does not close, doesn't close, doesn't latch
not to code; against code, illegal, no permit, unsafe, over spanned, undersized, double tapped, overfilled, ungrounded, no ground, failed inspection, red tagged
wet; damp, soaked, soggy, saturated, condensation, mojado, humedo, sweating, moisture high, waterlogged
gaps in; holidays, thin spot, thin spots, missed spots, missed spot, runs in, brush marks, lap marks, roller marks, flashing through, bleed through, bleeding through, fisheyes, drips in the paint, bad patch
cold joint; honeycomb, honeycombing, spalled, spalling, efflorescence, crazing, scaling, rock pocket
infested; termites, termite, ants, mice, mouse droppings, droppings, rodent, wasps, bugs, bees, carpenter ants
smells; smell, stinks, sewer smell, odor, odour, gas smell, musty
kicked out; proud of the wall, sticking out, sitting proud, popped out, popping, pops, pulled away, separated, separating, coming apart, pulling away, coming loose, hanging off, fell off, falling off, falling apart, came off, detached
runs; runs all night, keeps running, running constantly, won't shut off, won't stop running, cycling, short cycling
low voltage; low pressure, no water pressure, weak flow, weak pressure, low flow, underpowered, no heat
split pair; open pair, miswired, crossed pair, no signal, no connection, no link`,
  task: `grout task; regrouting
punch walk; walkthrough, walk through, walk-through
touch up task; touching up
inspection; rough inspection, final inspection, inspections
demo task; tear out, tear off, demolition
change order; co
pressure test; leak test, flood test, air test, water test, smoke test, blower door
delivery; deliveries, pickup, drop off`,
};

/** What each kind of work calls for: tools and small parts. Common practice, no source. */
export const BRING: Record<string, string[]> = {
  grout: ['grout float', 'sponge', 'bucket', 'mixing paddle', 'gloves'],
  tile: ['tile saw', 'notched trowel', 'spacers', 'level', 'bucket', 'mixing paddle'],
  caulk: ['caulk gun', 'utility knife', 'rag', "painter's tape"],
  silicone: ['caulk gun', 'utility knife', 'rag', "painter's tape"],
  seal: ['caulk gun', 'brush', 'rag'],
  paint: ['brush', 'roller frame', 'tray', 'drop cloth', "painter's tape"],
  prime: ['brush', 'roller frame', 'tray', 'drop cloth'],
  stain: ['stain pad', 'rags', 'drop cloth', 'gloves'],
  sand: ['sander', 'sandpaper', 'dust mask', 'vacuum'],
  scrape: ['scraper', 'drop cloth', 'respirator'],
  mud: ['taping knives', 'mud pan', 'mixing paddle'],
  tape: ['taping knives', 'mud pan'],
  patch: ['taping knives', 'mud pan', 'utility knife', 'drywall screws'],
  drywall: ['drywall lift', 'screw gun', 'T-square', 'utility knife', 'rasp'],
  frame: ['circular saw', 'framing nailer', 'speed square', 'level'],
  install: ['drill', 'level', 'tape measure', 'shims'],
  mount: ['drill', 'level', 'stud finder', 'anchors'],
  hang: ['drill', 'level', 'shims', 'stud finder'],
  rehang: ['drill', 'shims', 'plane'],
  adjust: ['screwdriver', 'hex keys'],
  plane: ['plane', 'pencil', 'saw horses'],
  level: ['level', 'shims'],
  shim: ['shims', 'level', 'utility knife'],
  replace: ['drill', 'pry bar', 'utility knife'],
  swap: ['drill', 'pry bar', 'utility knife'],
  fix: ['hand tools'],
  wire: ['voltage tester', 'wire strippers', 'wire nuts', 'electrical tape'],
  terminate: ['punch-down tool', 'cable tester', 'label tape'],
  trace: ['voltage tester', 'circuit tracer'],
  solder: ['torch', 'solder', 'flux', 'heat shield', 'fire extinguisher'],
  crimp: ['crimp tool', 'rings', 'go/no-go gauge'],
  snake: ['drain snake', 'gloves', 'bucket', 'rags'],
  unclog: ['drain snake', 'gloves', 'bucket', 'rags'],
  cut: ['saw', 'tape measure', 'pencil'],
  trim: ['miter saw', 'finish nailer', 'coping saw', 'tape measure'],
  scribe: ['scribe', 'jigsaw', 'plane'],
  demo: ['pry bar', 'contractor bags', 'dust mask', 'gloves'],
  pull: ['pry bar', 'contractor bags', 'gloves'],
  remove: ['pry bar', 'contractor bags', 'gloves'],
  pour: ['screed', 'float', 'wheelbarrow', 'hoe'],
  float: ['float', 'screed', 'level'],
  lay: ['tapping block', 'pull bar', 'spacers', 'saw'],
  set: ['level', 'string line'],
  dig: ['post-hole digger', 'shovel', 'bar'],
  insulate: ['utility knife', 'stapler', 'respirator'],
  flash: ['tin snips', 'caulk gun', 'sealant'],
  shingle: ['roofing nailer', 'chalk line', 'harness'],
  drill: ['drill', 'bits', 'vacuum'],
  core: ['core drill', 'vacuum', 'water bottle'],
  anchor: ['hammer drill', 'bit', 'blow-out bulb', 'torque wrench'],
  fasten: ['drill', 'bits'],
  tighten: ['wrench', 'screwdriver'],
  torque: ['torque wrench', 'torque screwdriver'],
  test: ['tester', 'gauge'],
  check: ['tester', 'flashlight', 'tape measure'],
  measure: ['tape measure', 'pencil', 'notebook'],
  clean: ['vacuum', 'rags', 'cleaner'],
  haul: ['contractor bags', 'straps'],
  tarp: ['tarp', 'furring strips', 'stapler'],
  glue: ['adhesive', 'clamps'],
  brace: ['bracing lumber', 'screws'],
  grade: ['rake', 'level', 'string line'],
  compact: ['plate compactor'],
  backfill: ['shovel', 'tamper'],
  connect: ['wrench', 'thread tape'],
  hook: ['wrench', 'thread tape'],
  vent: ['foil tape', 'tin snips'],
  stucco: ['hawk', 'trowel', 'scratcher'],
  weatherstrip: ['utility knife', 'tape measure'],
  recaulk: ['caulk gun', 'scraper', 'rag'],
  touch: ['brush', 'touch-up paint', 'rag'],
};
