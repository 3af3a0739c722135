import type { Sheet } from '../sheet.ts';

/** Parts of a building that are worked on but not bought. */
export const SURFACES: Sheet[] = [
  {
    kind: 'surface',
    lines: `wall; back wall, side wall, left wall, right wall, pared, paredes, front wall, long wall, short wall
accent wall; feature wall
knee wall; half wall, pony wall; ~knee while
party wall; partition, partition wall
retaining wall; wing wall; ~retaining well, retain in wall, remaining wall, retaining while
bearing wall; load bearing wall; ~baring wall
shower wall; wet wall, plumbing wall
brick wall; block wall, masonry wall
ceiling; techo, clg, overhead, cielo, plafon
vaulted ceiling; cathedral ceiling, tray ceiling
drop ceiling; suspended ceiling, false ceiling
bulkhead; ceiling drop, box out
floor; flooring surface, suelo
shower floor; mud bed, mud pan; ~shower flow
slab; slab on grade, concrete slab, pad slab, concrete floor, losa; ~slob
slab edge; turndown edge
bottom plate; sole plate, plate
top plate; double top plate; ~top played
sill plate; mudsill, mud sill; ~sale plate, sill played, seal plate, silk plate, cell plate, still plate, sil plate
corner; esquina, corner of the room
inside corner; internal corner
outside corner; external corner
rough opening; opening, ro; ~ruff opening
doorway; door opening, archway, arch
window opening
cutout; cut out
sink cutout; cooktop cutout
gap; margin, space between
reveal; ~reviel
joint; butt joint, tapered joint, mitre joint, miter joint
grout joint; grout line; ~grow line
control joint
expansion gap; perimeter gap
seam; ~seems
saw cut joint; sawcut
hole; agujero, hoyo
post hole; footing hole
core hole
knockout; knock out; ~nock out, knock oat
niche; shower niche, alcove, nook; ~nitch, knish, neesh, neche, knit ch
backsplash; back splash, splashback, side splash, splash; ~back splat, backs flash, back slash, bag splash
stub; stub out, stubout, drain stub
rough in; roughin
edge; lip, nosing edge, side, front edge
overhang; counter overhang
step; stoop
landing; stair landing
stair; staircase, escaleras, flight of stairs, steps run
stair opening; stairwell opening
footing; footer; ~footin, photo footing, foot in, footn
pier; concrete pier
foundation; stem wall, foundation wall, cimiento, cimentacion
column; pillar, columna; ~colum
valley; roof valley
ridge; roof ridge
eave; eaves, overhang eave
gable; gable end; ~gabel
dormer; ~doormer
hip; hip end
rake edge
roof slope; roof pitch
surround; fireplace surround
fireplace; hearth, firebox; ~harth
curb edge; kerb, apron
island; kitchen island, peninsula
crawlspace vent; foundation vent
circuit; home run, branch circuit, circuito
leg; a leg, b leg, flange leg
feeder
neutral; neutral wire, shared neutral; ~newtral
hot leg; hot wire, ungrounded conductor
traveler; traveller, switch leg
tierra fisica
tank; tank lid, reservoir
line; water line, cold side, hot side, main
supply side; return side
sewer line; sewer, drenaje, lateral sewer; ~sower line
water main; water supply, water service
gas joint; gas line piping, gas line
vent run; vent line
branch line; drain line
section; piece of siding, row of siding
span
frame; picture frame
framing; wall framing, stud wall
window frame
coat; skim coat, skim
first coat; second coat, third coat, final coat, prime coat, top coat, finish coat paint, base coat paint
finish surface; floor surface
screed; ~screet, scree'd
slope; pitch, fall, grade
touch up; touchup
nail hole; screw hole
fence line; post line
layout; lay out lines
drywall patch; patch area, repair area
water; hot water, cold water, agua
water pressure; pressure, static water pressure
power; electricity, luz electrica, corriente
gas supply; gas
heat; heating
temperature; temp
humidity; moisture
airflow; air flow, static pressure
amp draw; voltage, current draw
trim out
punch list; punch, snag list, snagging list
crack repair; crack line
slump; concrete slump
ticket; delivery ticket
cavity; stud bay, bay, joist bay, wall cavity
chase; pipe chase
penetration; roof penetration, wall penetration
elevation mark; benchmark, datum
property line; setback line
easement; right of way
clearance; headroom
deck stair; deck stairs
deck framing
guard
firewall; demising wall, shear wall
parapet; parapet wall; ~para pit, parrot pit, pair a pet, parrot bit, pair of pet
ceiling patch; ceiling height
floor level; floor height, floor area
caisson; concrete walk, approach
underside; top edge, bottom edge, back edge, top end, left end, right end, far end, backside
inside face; outside face, front face
centerline; center line
pass through; pass thru, passthrough, scuttle
trench; ditch, excavation, pit
weld; miter, miters
rabbet; dado, groove, bevel, chamfer, roundover, kerf, mortise, counterbore
void; voids
point load; bearing point
roofline; roof line, roof plane, roof surface, roof area, chimney top
cricket; roof saddle
shaft; light shaft
service; electrical service, service feed, underground service, overhead service, subpanel feed
hots; grounds, neutral conductor, switch loop, multi wire branch
gas run; sprinkler pipe run
plumbing; under slab plumbing, groundwork, groundworks
sewer lateral; lateral
stub up; stub ups
toilet base; bowl rim
wet area; splash zone
counter area; bar top, bartop, island top, desk top
deflection; bounce
subgrade; elevation, contour
bank; hillside, embankment
sheen; color match, paint job, paint finish
texture match; wear layer
drywall repair; ceiling repair
nail heads; screw heads, nailing pattern, screw pattern
flow rate; water flow
static test; superheat, subcooling, delta t
moisture level; moisture content, moisture reading, humidity level
amp load; co level, signal strength
rpm; torque setting
gridline; grid line, story pole, property pins, setback
footprint; floor plan
drawing; blueprint, shop drawing, cut sheet, door schedule, finish schedule, submittal, rfi, as built
permit card; inspection card, red tag
warranty card; operating manual
beam pocket; floor system, joist end
egress path; access route, path of travel
debris; construction debris, demo debris, dirt pile, spoils, stockpile`,
  },
];
