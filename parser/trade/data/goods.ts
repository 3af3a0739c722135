/**
 * Materials, parts and fixtures, by the counter that sells them. One line each:
 * `name; other names; ~what dictation writes; @purchase units`. Kinds are the section's.
 */
export const GOODS: Record<string, { kind: 'material' | 'part' | 'fixture'; counter: string; lines: string }[]> = {
  tile: [
    {
      kind: 'material',
      counter: 'tile',
      lines: `tile; floor tile, wall tile, tiles, field tile, azulejo, loseta; @box, sq ft
porcelain tile; porcelain; @box
ceramic tile; ceramic; @box
mosaic; mosaic tile, penny tile, hex tile, mosaic sheets; @sheet, box
subway tile; subway; @box, each
bullnose; bullnose tile, bull nose; @each
thinset; thin set, thin-set, tile adhesive, thinset mortar, modified thinset, unmodified thinset, rapid set, pegamento; ~fin set, thin said, then set, thin sent, fence set; @bag
grout; lechada, boquilla; ~grow, growt, groud, route; @bag
sanded grout; ; ~sanded grow, sanded route; @bag
unsanded grout; non sanded grout, nonsanded grout; ~unsanded grow; @bag
epoxy grout; ; @kit
grout sealer; ; @bottle
backer board; cement board, backerboard, tile backer, backer, cement backer, tile backer board; ~backer bored; @sheet
uncoupling membrane; decoupling membrane, membrane; @roll
waterproofing; waterproofing membrane, liquid membrane, tanking; @bucket
self leveler; self levelling compound, self leveling compound, self-leveler, leveler, leveling compound, floor leveler, levelling compound; @bag
tile spacers; spacers, wedges, leveling clips, levelling clips, lippage clips; @bag
edge trim; tile edge, tile edging, edge profile, edging trim; @stick, each
threshold; marble threshold, saddle; @each
transition strip; transition, reducer strip, t molding, t-molding, reducer; @each`,
    },
  ],
  paint: [
    {
      kind: 'material',
      counter: 'paint',
      lines: `paint; wall paint, ceiling paint, trim paint, latex paint, emulsion, pintura, house paint, exterior paint; @gal, qt, tin
primer; sealer primer, undercoat, stain blocker, stain blocking primer, pva primer, bonding primer; @gal
white paint; flat white, ceiling white, white matt, matt white, white matt paint; @gal
semigloss; semi gloss, semi-gloss, gloss, satin, satinwood, eggshell enamel; @gal
stain; deck stain, wood stain, gel stain; @gal, qt
varnish; polyurethane, poly, clear coat, lacquer, finish coat; @qt, gal
wood filler; filler, wood putty, two part filler; @tub, can
spackle; spackling, spackling compound, lightweight spackle; ~speckle, sparkle; @tub
caulk; caulking, painter's caulk, paintable caulk, acrylic caulk, decorators caulk, latex caulk, siliconized caulk; ~cock, chalk, cough, cauk, cork, calk; @tube
silicone; clear silicone, silicone caulk, silicone sealant, sanitary silicone, mildew silicone; ~silly cone, silicon, sillycone, silicoin; @tube
sealant; polyurethane sealant, urethane caulk, butyl sealant, mastic sealant, fire caulk, acoustic sealant; @tube
painter's tape; masking tape, blue tape, painters tape, frog tape; @roll
roller cover; roller covers, roller sleeve, roller, nap; @each
paint brush; brush, brushes, sash brush, chip brush; @each
paint tray; tray liner, tray, tray liners; @each
drop cloth; drop cloths, dust sheet, dust sheets, plastic sheeting, poly sheeting, plastic; @each, roll
sandpaper; sand paper, sanding sponge, sanding sponges, sanding disc, sanding discs, sanding screens, glasspaper, lija; @pack, each
thinner; mineral spirits, paint thinner, white spirit, turpentine; @can
wallpaper; wall paper, wallcovering, lining paper; @roll
wallpaper paste; ; @bucket`,
    },
  ],
  drywall: [
    {
      kind: 'material',
      counter: 'drywall',
      lines: `drywall; sheetrock, sheet rock, plasterboard, gypsum board, gyp board, wallboard, gib, tablaroca, drywall sheets; ~dry wall, drive all; @sheet
moisture board; green board, greenboard, moisture resistant drywall, mr board, purple board; @sheet
fire rated drywall; type x, fire board, fireboard; @sheet
joint compound; mud, all purpose mud, drywall mud, topping mud, topping, jointing compound, taping compound, all purpose, easy sand, jointing; ~join compound; @bucket, box
setting compound; hot mud, quick set, setting type compound, forty five minute mud, twenty minute mud; @bag
drywall tape; paper tape, mesh tape, joint tape, scrim tape, fiberglass tape; @roll
corner bead; corner beads, angle bead, cornerbead; ~corner bee; @stick, each
j bead; j-bead, l bead, j trim; @stick
drywall screws; ; @box
plaster; patching plaster, finish plaster, multi finish, bonding coat, yeso; @bag
insulation; batts, batt, fiberglass insulation, mineral wool, rock wool, blown insulation, cellulose, batt insulation, aislante, batt of insulation; ~bats; @bag, bundle, roll
foam board; rigid foam, rigid insulation, xps, polyiso, eps, insulation board, celotex style board; @sheet
vapor barrier; vapour barrier, poly, vapor retarder, polythene, damp proof membrane, dpm; @roll
acoustic ceiling tile; ceiling tiles, ceiling tile, drop ceiling tile, act; @box
ceiling grid; t bar, main tee, cross tee, wall angle; @each`,
    },
  ],
  lumber: [
    {
      kind: 'material',
      counter: 'lumber',
      lines: `2x4; two by four, two by fours, 2x4s, 2 x 4, 2 by 4, studs 2x4; @each
2x6; two by six, 2x6s, two by sixes; @each
2x8; two by eight, 2x8s, two by eights; @each
2x10; two by ten, 2x10s, two by tens; @each
2x12; two by twelve, 2x12s; @each
1x2; one by two, 1x2s; @each
1x3; one by three, 1x3s, furring; @each
1x4; one by four, 1x4s, one by fours; @each
1x6; one by six, 1x6s, one by sixes; @each
1x8; one by eight, 1x8s; @each
1x10; one by ten; @each
1x12; one by twelve; @each
4x4; four by four, 4x4s, four by fours; @each
4x6; four by six; @each
6x6; six by six, 6x6s; @each
lumber; timber, wood, madera, framing lumber, treated lumber, pressure treated, pt lumber; @each
stud; studs, metal stud, steel stud, king stud, jack stud; @each
joist; joists, floor joist, ceiling joist, deck joist; ~joyce, joist's, joyces, choice; @each
rafter; rafters; @each
blocking; block, blocks, nailers, noggins, noggin, dwangs, backing; @each
plywood; ply, cdx, subfloor plywood, sheathing, underlayment plywood, birch ply; ~fly wood, ply would; @sheet
osb; oriented strand board, sterling board, chipboard, advantech style subfloor; @sheet
mdf; medium density fibreboard; @sheet
hardboard; masonite board; @sheet
subfloor; sub floor, subflooring; @sheet
baseboard; base board, base, skirting, skirting board, base molding, base moulding; @stick, each, ft
casing; door casing, window casing, architrave, case molding, trim casing; ~cases; @stick, each, ft
trim; molding, moulding, trim board, trim boards, pvc trim; @stick, ft
crown molding; crown, crown moulding, cornice, coving; @stick, ft
quarter round; shoe molding, shoe, base shoe, quarter-round, scotia; ~quarter ground, corner round; @stick, ft
chair rail; dado rail; @stick
beadboard; bead board, tongue and groove, t&g, wainscot, wainscoting, shiplap; @each
door stop molding; stop bead; @stick
decking; deck boards, deck board, composite decking, decking boards, decking board; @each, ft
picket; pickets, fence picket, palings, paling; @each
fence panel; fence panels, panel; @each
fence post; post, posts, fence posts, gate post; @each
baluster; balusters, spindle, spindles; ~ballister, balisters, banister's; @each
handrail; hand rail, rail, railing, top rail, guard rail, bannister; @each, ft
stair tread; tread, treads; @each
riser; risers, stair riser; @each
stringer; stringers; @each
newel post; newel, newel posts; ~new post, newell; @each
shim; shims, packers, cedar shims; @pack, bundle
beam; header, lvl, glulam, lintel, girder; @each
ledger; ledger board; @each
fascia; fascia board; ~fasha, facia, fashion board; @each, ft
soffit; soffit panel, soffit board; ~sofa, soffits, saw fit; @each
siding; clapboard, lap siding, cladding, weatherboard, siding boards, fiber cement siding; @each, ft
house wrap; housewrap, building wrap, building paper, tar paper, felt paper; @roll
lattice; trellis; @each
countertop; counter top, worktop, butcher block, laminate top, bench top; @each
shelf; shelves, shelving, shelf board, shelf boards; @each
plywood strip; ripping, rippings; @each`,
    },
  ],
  hardware: [
    {
      kind: 'material',
      counter: 'hardware',
      lines: `screw; screws, wood screws, tornillos, tornillo, structural screws, trim screws, trim head screws, sheet metal screws, self tappers, machine screws, cabinet screws, finish screws; @box
deck screws; decking screws, exterior screws; @box
nail; nails, clavos, clavo, framing nails, common nails, galvanized nails, ring shank nails, box nails; @box
finish nails; brads, brad nails, pin nails, eighteen gauge nails, trim nails, casing nails; @box
coil nails; siding nails; @box
roofing nails; clout nails; @box
staples; staple, t50 staples; @box
bolt; bolts, carriage bolt, carriage bolts, lag bolt, lag bolts, lags, lag screws, through bolts, hex bolt, hex bolts, coach screws, coach bolts; @each, box
washer; washers, fender washers, flat washers; @each, box
nut; nuts, hex nuts; @each
anchor; anchors, wedge anchor, wedge anchors, drywall anchor, drywall anchors, toggle bolt, toggle bolts, toggles, sleeve anchor, tapcon style screws, concrete screws, wall plugs, rawl plugs, masonry anchors; @box, each
joist hanger; joist hangers, hanger, hangers, hurricane tie, hurricane ties, post base, post bases, post cap, strap ties, framing angles; @each
strap; straps, strapping, nail plate, nail plates, mending plate; @each
bracket; brackets, shelf bracket, shelf brackets, angle bracket, l bracket, corner brace; @each
construction adhesive; adhesive, glue, subfloor adhesive, panel adhesive, grab adhesive, liquid nail; @tube
wood glue; carpenter's glue, pva glue; @bottle
epoxy; two part epoxy, epoxy resin, anchoring epoxy; @tube, kit
duct tape; gaffer tape; @roll
foil tape; foil backed tape, aluminum tape, aluminium tape; @roll
flashing tape; window tape, sill tape, butyl tape, seam tape, joist tape; @roll
spray foam; foam, expanding foam, window foam, can foam, canned foam, great gap filler; @can
weatherstrip; weather strip, weatherstripping, weather stripping, draught excluder, door sweep, sweep; @each, roll
contractor bags; trash bags, rubbish bags, rubble sacks, garbage bags; @box
blade; blades, saw blade, saw blades, diamond blade, multi tool blade; @each
drill bit; bit, bits, drill bits, spade bit, hole saw, step bit, masonry bit; @each
respirator; mask, masks, dust mask, p100, n95, cartridge filters; @each
gloves; nitrile gloves; @box
hose; garden hose; @each
chain; ; @ft
cable ties; zip ties, zip tie; @bag
felt pads; bumpers, felt bumpers; @pack
paracord; rope, twine, string line; @roll
tarp; tarps, tarpaulin; @each`,
    },
    {
      kind: 'part',
      counter: 'hardware',
      lines: `hinge; hinges, door hinge, butt hinge, cabinet hinge, concealed hinge, bisagra, bisagras; @each
door knob; doorknob, knob, knobs, door handle, lever set, passage set, privacy set, lockset, door lever, handle; @each
lock; deadbolt, dead bolt, keyed lock, mortise lock, cylinder, cerradura; @each
strike plate; strike, keeper, striker plate, strikes; @each
latch; gate latch, catch, magnetic catch, thumb latch, roller catch; @each
cabinet pull; pulls, pull, cabinet knob, cabinet handles, drawer pull, drawer pulls, cabinet pulls; @each
drawer slide; drawer slides, slides, drawer runner, runners, soft close slides; @pair
door closer; closer; @each
door stop; doorstop, door stops; @each
door bottom; door shoe, sill pan; @each
shelf standard; shelf pins, shelf pin, shelf clips; @pack
closet rod; closet pole, rod; @each
towel bar; towel rail, towel ring, towel hook, robe hook, coat hook, coat hooks, hooks; @each
grab bar; grab bars, grab rail, grab rails; @each
toilet paper holder; paper holder, tp holder; @each
mirror; mirrors; @each
sash lock; sash locks, window lock, window latch; @each
sash cord; sash chain; @each
sliding door track; track, barn door track, bypass track; @each
caster; casters, castors, wheels; @each
mailbox; house numbers; @each
sign; signage, ada sign, exit sign; @each
gate; side gate; @each
gate hinge; gate hinges, strap hinge; @pair`,
    },
  ],
  flooring: [
    {
      kind: 'material',
      counter: 'flooring',
      lines: `vinyl plank; lvp, luxury vinyl, lvt, vinyl plank flooring, plank, planks, vinyl planks; @box
laminate; laminate flooring, laminate floor; @box
hardwood; hardwood flooring, hardwood floor, oak flooring, engineered hardwood, engineered flooring, parquet, floorboards, wood floor, piso; @box, sq ft
sheet vinyl; vinyl sheet, linoleum, lino, vinyl flooring, vinyl; @sq ft, roll
carpet; carpeting, carpet tile, carpet tiles, alfombra; @sq yd, box
carpet pad; pad, padding, underlay, carpet underlay; @roll
tack strip; tackless strip, gripper rod, gripper; @box
underlayment; underlay foam, floor underlayment, foam underlayment, cork underlayment; @roll
floor glue; flooring adhesive, vct adhesive, mastic; @bucket
vct; vinyl composition tile; @box
rubber base; cove base, vinyl base, wall base; @roll, box
stair nose; stair nosing, nosing; @each
floor protection; ram board, floor paper, rosin paper, floor protection board; @roll`,
    },
  ],
  electrical: [
    {
      kind: 'material',
      counter: 'electrical',
      lines: `cable; nm cable, wire, romex style cable, twin and earth, 12/2, 14/2, 10/2, 12/3, 14/3, 10/3, twelve two, fourteen two, uf cable, mc cable, armored cable, alambre, cableado, electrical wire; ~; @roll, ft
cat6 cable; cat 6, cat six cable, cat5e, cat 5, network cable, data cable, ethernet cable, cat six, coax, coax cable, speaker wire, thermostat wire, stat wire, low voltage wire, bell wire; @box, ft
conduit; emt, pvc conduit, flex conduit, rigid conduit, liquidtight, trunking, tubo conduit; @stick, ft
wire nut; wire nuts, wirenuts, wire connectors, lever connectors, wago style connectors, push connectors, connector blocks; @box, each
electrical tape; tape electrical, insulating tape; @roll
ground wire; bare copper, grounding wire, ground rod, earth wire, earth rod; @ft`,
    },
    {
      kind: 'part',
      counter: 'electrical',
      lines: `outlet; receptacle, receptacles, outlets, plug, plugs, socket, sockets, duplex, recep, receps, power point, gpo, enchufe, contacto, toma; ~outlaid; @each
gfci; gfi, gfcis, gfci outlet, gfci receptacle, ground fault, rcd, gfi outlet, receptacle gfi; ~gf ci, gifs eye; @each
switch; switches, light switch, three way switch, 3 way switch, single pole switch, interruptor, apagador; ~swith, swithc; @each
dimmer; dimmers, dimmer switch, led dimmer; @each
breaker; breakers, circuit breaker, afci breaker, gfci breaker, sp breaker, double pole breaker, mcb, rcbo; ~braker, breakers; @each
panel; sub panel, subpanel, electrical panel, breaker panel, consumer unit, load center, fuse box, switchboard; @each
junction box; j box, j-box, jbox, device box, old work box, new work box, gang box, box extender, electrical box, pancake box, ceiling box, fan box, weatherproof box, single gang box, two gang box, back box, pattress; @each
mud ring; mud rings, plaster ring; @each
cover plate; cover plates, wall plate, wall plates, switch plate, outlet cover, face plate, faceplate, blank plate, outlet covers, plate cover, tapa, blank cover, in use cover, bubble cover; @each
blank filler; blank fillers, filler plate, blanks; @each
light fixture; fixture, light fixtures, lights, light, pendant, pendants, sconce, sconces, flush mount, chandelier, luz, lampara, vanity light, under cabinet light, track light, flood light, strip light; @each
recessed light; recessed lights, can light, can lights, cans, downlight, downlights, pot light, pot lights, wafer light, wafer lights, high hat, high hats; @each
driver; led driver, ballast, transformer; @each
bulb; bulbs, light bulb, led bulb, lamp, lamps, foco, focos; @each, box
ceiling fan; fan; @each
exhaust fan; bath fan, vent fan, bathroom fan, extractor fan, extractor, fan motor; @each
smoke detector; smoke alarm, smoke detectors, co detector, smoke, smokes, duct detector, duct detectors; @each
thermostat; stat, thermostats; ~thermos stat; @each
doorbell; door bell, chime; @each
timer; timer switch, occupancy sensor, motion sensor; @each
jack; jacks, data jack, keystone, keystones, keystone jack, phone jack, network jack, rj45, rj45 ends; @each
patch panel; ; @each
network switch; poe switch, router, access point, wap; @each
camera; cameras; @each
data drop; drop, drops, cable drop; @each
neutral lug; lug, lugs, neutral bar, ground bar; @each
splice; splices, wire splice; @each
meter socket; meter base, meter, meter can; @each
power cord; cord, dryer cord, range cord, appliance cord, pigtail, three prong cord, four prong cord, whip; @each
cable clamp; cable clamps, romex connector, cable connectors, cable staple, cable clips, connectors; @each
strobe; strobes, horn strobe, speaker strobe, speaker, speakers, pull station; @each
relay; relays, pilot relay, control relay, contactor; @each
emergency light; exit light, emergency lights; @each
power supply; ; @each`,
    },
  ],
  plumbing: [
    {
      kind: 'material',
      counter: 'plumbing',
      lines: `pipe; pipes, copper pipe, copper, pvc pipe, abs pipe, cast iron pipe, drain pipe, waste pipe, supply pipe, black pipe, galvanized pipe, tubo de agua, gas pipe, soil pipe, poly pipe; @stick, ft
pex; pex pipe, pex tubing; ~pecks, packs, pecs, peks, pecs pipe; @roll, ft
solder; ; ~sodder, sauder; @roll
flux; ; @can
thread tape; plumber's tape, teflon tape, ptfe tape, pipe tape; @roll
pipe dope; thread sealant, pipe compound, jointing compound paste; @can, tube
plumber's putty; plumbers putty, putty; ~puddy, plumbers puddy, plumber's puddy; @tub
primer and cement; pvc cement, pvc primer, solvent cement, pvc glue, purple primer, abs cement; @can
pipe insulation; pipe wrap, lagging, foam pipe insulation, heat tape; @each, ft
gas flex; flex line, gas connector, gas line; @each`,
    },
    {
      kind: 'part',
      counter: 'plumbing',
      lines: `elbow; elbows, ell, ells, ninety, nineties, ninety degree elbow, 90, 90s, codo, codos, forty five, street elbow, drop ear elbow; ~elbos; @each, bag
tee; tees, sanitary tee, san tee, wye, wyes, san tees; ~tea, sanitary tea, santy; @each
coupling; couplings, coupler, couplers, union, unions, slip coupling, repair coupling; @each
adapter; adapters, adaptor, male adapter, female adapter, trap adapter, reducer bushing, bushing, bushings; @each
pex ring; crimp ring, crimp rings, pex rings, cinch ring, pex crimp; ~pecks crimp, pecks ring; @bag
pex elbow; pex elbows; ~pecks elbows, pecks elbow; @each, bag
end cap; end caps, cap, caps, test cap, plug cap; @each
p-trap; p trap, trap, traps, bottle trap, sink trap; ~pea trap, pee trap, pizza trap; @each
shutoff valve; shutoff, shut off, shutoffs, shut offs, stop valve, quarter turn stop, quarter turn, angle stop, angle stops, supply stop, isolation valve, isolator, stop tap, llave de paso, shutoff valves, shut off valve; ~shot off; @each
ball valve; ball valves, gate valve, valve, valves, llave, check valve, backflow preventer, isolation valves; ~bald valve; @each
pressure regulator; prv, pressure reducing valve; @each
relief valve; t&p valve, t and p, tpr valve, temperature relief valve; @each
fill valve; ballcock, fill valves, float valve; @each
flapper; flappers, flush valve, flush handle, tank lever; ~flopper; @each
wax ring; wax rings, toilet seal, wax free seal, pan connector; ~wax rink, wax string, wack ring, wax wing; @each
closet bolts; johnny bolts, toilet bolts; @pair
closet flange; toilet flange, flange, flange extender, flange repair ring; ~flanj, flinch, fringe; @each
supply line; supply lines, flexi hose, flex connector, braided line, supply hose, flexible connector, ice maker line, supplies, flexi; @each
washer hose; washer hoses, washing machine hose, braided washer hose; @each
drain; drains, floor drain, shower drain, tub drain, sink drain, basket strainer, strainer, drain assembly, desague; @each
drain cover; drain covers, drain grate, strainer cover; @each
pop up; pop-up, popup, pop up drain, pop up assembly, drain stopper, stopper; @each
overflow; overflow gasket, overflow plate, overflow cover, tub overflow; @each
extension tube; tailpiece, tail piece, slip joint extension, tailpipe; @each
slip joint washer; slip washer, slip nut, slip nuts, slip joint nut, slip joint washers; @each
gasket; gaskets, o ring, o-ring, o rings, rubber washer, packing; @each
cartridge; cartridges, shower cartridge, faucet cartridge, mixing cartridge, stem; @each
escutcheon; escutcheons, trim ring, trim plate, flange cover; ~escutchen, scotchin, a scutcheon; @each
shower head; showerhead, shower arm, hand shower, rain head, shower trim, trim kit; @each
tub spout; spout; ~tub spot; @each
cleanout; clean out, clean-out, cleanout plug, cleanout cover; @each
vent pipe; vent stack, stack, aav, air admittance valve, roof boot, vent boot, pipe boot; @each
sump pump; pump, pumps, condensate pump, circulator, sewage pump; @each
hose bib; hose bibb, sillcock, outdoor faucet, spigot, outside tap, garden tap; @each
expansion tank; ; @each
hammer arrestor; water hammer arrestor, arrestor; @each
anode rod; heating element, element; @each
water filter; filter housing, softener; @each
sprinkler head; sprinkler heads, sprinkler, sprinklers; @each
hose clamp; hose clamps, pipe clamp, pipe clamps, hanger strap, clevis; @each`,
    },
    {
      kind: 'fixture',
      counter: 'plumbing',
      lines: `toilet; toilets, wc, commode, water closet, loo, inodoro, escusado, toilet tank, toilet bowl; @each
toilet seat; seat; @each
sink; sinks, basin, lavatory, lav, vessel sink, kitchen sink, laundry sink, utility sink, lavabo, fregadero, mop sink, prep sink; ~sync; @each
faucet; faucets, tap, taps, mixer tap, mixer, kitchen faucet, bath faucet, grifo, lav faucet, sink faucet; ~fossett, faucett; @each
tub; bathtub, bath tub, soaker, tina, bañera, tub surround; @each
shower; showers, shower stall, shower unit, enclosure; @each
shower door; shower glass, shower screen, glass door, glass panel; @each
shower pan; shower base, shower tray, pan, curb, shower curb; @each
vanity; vanities, vanity top, vanity cabinet; ~vanitty; @each
water heater; hot water heater, tankless, boiler, calentador, hot water tank, cylinder tank; @each
disposal; garbage disposal, disposer, waste disposal; ~this posal; @each
urinal; ; @each
shower valve; mixing valve, tub valve, diverter, thermostatic valve; @each`,
    },
  ],
  hvac: [
    {
      kind: 'part',
      counter: 'hvac',
      lines: `register; registers, floor register, supply register, diffuser, diffusers, vent cover, air vent; @each
grille; grilles, return grille, grill, return air grille, louver, louvre; @each
duct; ducts, ductwork, duct work, flex duct, round duct, spiral duct, trunk line, takeoff, start collar, boot, plenum; @each, ft
damper; dampers, fire damper, balancing damper; @each
air filter; filter, filters, furnace filter; @each
furnace; furnaces, air handler, blower, blower motor, inducer, fan coil; @each
condenser; condensing unit, outdoor unit, ac unit, air conditioner, compressor, mini split, heat pump, heat pump unit, heat pump units, rooftop unit, rtu, indoor head; @each
evaporator coil; coil, a coil; @each
lineset; line set, suction line, refrigerant line; @each
condensate line; condensate drain, drain pan, condensate pan; @each
dryer vent; vent hood, dryer duct, dryer vent cover, wall cap, vent cap, range hood vent, vent, vents; @each
range hood; hood, hood fan; @each
radiator; radiators, baseboard heater, convector, towel warmer; @each
radiator valve; trv, bleed valve; @each
capacitor; run capacitor; @each
flue; flue pipe, b vent, chimney liner; @each
refrigerant; freon, 410a; @lb
duct sealant; duct mastic; @tub
dehumidifier; dehumidifiers, air mover, air movers, air scrubber; @each`,
    },
  ],
  appliances: [
    {
      kind: 'fixture',
      counter: 'appliances',
      lines: `range; stove, cooker, oven, cooktop, hob, wall oven, estufa; @each
fridge; refrigerator, freezer, ice maker, wine fridge; @each
dishwasher; dish washer; @each
washer machine; washing machine, clothes washer, lavadora; @each
dryer; clothes dryer, tumble dryer, secadora; @each
microwave; over the range microwave; @each
garage door opener; opener; @each`,
    },
  ],
  roofing: [
    {
      kind: 'material',
      counter: 'roofing',
      lines: `shingle; shingles, architectural shingles, roof shingles, tejas; @bundle
roof underlayment; roofing felt, synthetic underlayment, felt; @roll
ice and water shield; ice and water, ice shield; @roll
flashing; step flashing, counterflashing, counter flashing, drip edge, valley flashing, kick out flashing, kickout flashing, z flashing, apron flashing, sheet metal flashing, pan flashing, door pan, door pans; @each, ft
ridge cap; ridge vent, ridge shingles, hip and ridge; @bundle
roofing cement; roof cement, tar, flashing cement, roof sealant; @tube, can
gutter; gutters, downspout, downspouts, gutter guard, gutter pipe, leader, rainwater pipe, canal; @stick, ft
roof sheathing; roof decking, roof deck, decking sheets; @sheet
roof tile; slate, slates, concrete tile, clay tile; @each
metal roofing; metal panel, standing seam, roof panel; @each
epdm; rubber roof, roofing membrane, tpo; @roll
skylight; skylights, roof window; @each
starter strip; starter, starter course; @bundle
chimney cap; chimney; @each
reglet; ; @ft`,
    },
  ],
  concrete: [
    {
      kind: 'material',
      counter: 'concrete',
      lines: `concrete; concrete mix, ready mix, redi mix, cemento, concreto, quick set concrete, fence post mix, post mix; ~con crete; @bag, yd
cement; portland cement; @bag
mortar; mortar mix, type s, type n, mortar bed, mezcla; ~mortor; @bag
gravel; crushed stone, stone base, road base, base rock, class five, drain rock, pea gravel, grava, hardcore; @yd, ton, bag
sand; masonry sand, paver sand, polymeric sand, arena, sharp sand; @bag, ton
rebar; rebars, re bar, varilla, reinforcing bar, reo; ~ree bar, read bar; @stick, each
wire mesh; welded wire, mesh, remesh, lath, diamond lath; @sheet, roll
form; forms, form boards, form lumber, shuttering, formwork; @each
paver; pavers, paving stone, paving slab, slabs; @each
brick; bricks, ladrillo, ladrillos, face brick; @each
block wall unit; cmu, cinder block, concrete block, breeze block, bloque, besser block; @each
stucco; render, base coat, scratch coat, finish coat stucco; @bag
expansion joint; expansion joint material, isolation joint; @ft
concrete sealer; sealer, masonry sealer, crack filler, joint sealer; @tube, bucket
retarder; curing compound, cure and seal; @bucket
sonotube; tube form, form tube, pier form; @each
stone veneer; veneer stone, cultured stone, stone; @box
geotextile; landscape fabric, filter fabric, weed barrier; @roll`,
    },
  ],
  doors: [
    {
      kind: 'fixture',
      counter: 'doors',
      lines: `door; doors, interior door, exterior door, prehung door, prehung, slab door, bifold, bifold door, bypass door, pocket door, barn door, storm door, closet door, entry door, french door, french doors, patio door, sliding door, slider, garage door, door slab, screen door, side light, sidelight, puerta, puertas, front door, back door, fire door, cabinet door; @each
window; windows, window unit, double hung, casement, casement window, ventana, ventanas, egress window, sash, sashes, replacement window, picture window, transom; @each
window screen; screens, screen, insect screen, flyscreen; @each
blind; blinds, shade, shades, curtain rod; @each
cabinet; cabinets, base cabinet, wall cabinet, upper cabinet, uppers, lowers, gabinete, gabinetes, cupboard, cupboards, carcass, pantry cabinet, cabinet box, island cabinet, sink base; @each
filler strip; cabinet filler, scribe molding, toe kick, toekick, kickboard, end panel, plinth; @each
drawer; drawers, drawer box, drawer front; @each
jamb; door jamb, jambs, door frame, jamb extension; ~jam, jams; @each
sill; window sill, window sills, sills, stool, window stool, door sill; @each
glass; glazing, pane, panes, insulated glass unit, igu, vidrio; @each
access panel; access door, hatch; @each`,
    },
  ],
  landscape: [
    {
      kind: 'material',
      counter: 'landscape',
      lines: `topsoil; top soil, soil, fill dirt, dirt, compost, tierra; @yd, bag
mulch; bark, bark mulch, wood chips; @yd, bag
sod; turf, grass seed, seed, lawn seed, artificial turf; @roll, bag
shrub; shrubs, plants, tree, trees, hedge; @each
irrigation pipe; drip line, drip tubing, poly tubing, irrigation line; @roll
irrigation valve; zone valve, controller, emitter, emitters; @each
drain tile; french drain, perforated pipe, corrugated pipe, land drain, ag pipe, socked pipe; @roll, ft
catch basin; catch basins, drain box, gully; @each
retaining wall block; wall block, wall blocks, capstone, cap block; @each
fertilizer; weed killer; @bag
edging; landscape edging, steel edging; @ft
fence; fencing, chain link, wire fence, cerca; @ft`,
    },
  ],
};
