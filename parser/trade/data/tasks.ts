import type { Sheet } from '../sheet.ts';

/**
 * The verbs of the trade with their forms, and the tools and small parts that each calls for (`+`).
 * Common practice, no source. Work spoken of as a thing ("the inspection") stands in `deeds.ts`.
 */
export const TASKS: Sheet[] = [
  {
    kind: 'task',
    lines: `grout; grouted, grouting, regrout, regrouted, regrouting; +grout float, sponge, bucket, mixing paddle, gloves
tile; tiled, tiling, retile, retiled, retiling; +tile saw, notched trowel, tile spacers, level, bucket, mixing paddle
waterproof; waterproofed, waterproofing, tank, tanked; +roller, brush, seam band
caulk; caulked, caulking, recaulk, recaulked, recaulking; ~cocking, corking, coughing; +caulk gun, utility knife, rags, painter's tape
silicone; siliconed, siliconing; +caulk gun, utility knife, rags, painter's tape
seal; sealed, sealing, reseal, resealed, resealing; +caulk gun, brush, rags
paint; painted, painting, repaint, repainted, repainting; +brush, roller frame, tray, drop cloth, painter's tape
prime; primed, priming, spot prime, reprime; +brush, roller frame, tray, drop cloth
stain; staining, restain, restained; +stain pad, rags, drop cloth, gloves
varnish; varnished, varnishing, poly, lacquer, lacquered; ~lack her, locker finish; +brush, sandpaper, tack cloth
touch up; touched up, touching up, touch; +brush, touch-up paint, rags
spray; sprayed, spraying; +paint sprayer, masking paper, respirator
mask; masked, masking, mask off; +painter's tape, masking film
wallpaper; wallpapered, papering, hang paper; +paste brush, smoothing knife, level
sand; sanded, sanding, resand, resanded; +sander, sandpaper, dust mask, vacuum
scrape; scraped, scraping; +scraper, drop cloth, respirator
strip; stripped, stripping; +scraper, stripper, gloves, respirator
prep; prepped, prepping, prepare, prepared; +scraper, filler, sandpaper, drop cloth
fill; filled, filling, putty, puttied; +putty knife, filler, sandpaper
mud; mudded, mudding, float out; +taping knives, mud pan, mixing paddle
tape; taped, taping, retape, retaped; +taping knives, mud pan
skim; skimmed, skimming, skim coat; +taping knives, mud pan, mixing paddle
texture; textured, texturing; +texture hopper, compressor, drop cloth
plaster; plastered, plastering, replaster; +hawk, trowel, bucket, mixing paddle
patch; patched, patching; +taping knives, mud pan, utility knife, drywall screws
drywall; drywalled, drywalling, board, boarded; ~dry wal, tri wall; +drywall lift, screw gun, T-square, utility knife, rasp
hang; hung, hanging; +drill, level, shims, stud finder
rehang; rehung, rehanging; +drill, shims, plane
mount; mounted, mounting; +drill, level, stud finder, anchors
install; installed, installing, reinstall, reinstalled, put in, instalar; +drill, level, tape measure, shims
set; setting, sets in place; +level, string line
reset; resetting; +level, shims, wrench
lay; laid, laying; +tapping block, pull bar, spacers, saw
level; leveled, leveling, levelled, levelling; +level, shims
plumb up; plumbed up; +level, shims
shim; shimmed, shimming; ~shems, shimmy; +shims, level, utility knife
square; squared, squaring, square up; +framing square, tape measure
plane; planed, planing; +plane, pencil, saw horses
scribe; scribed, scribing; +scribe, jigsaw, plane
cut; cutting, recut, cortar; +saw, tape measure, pencil
rip; ripping; +circular saw, straightedge, tape measure
notch; notched, notching; +jigsaw, chisel, pencil
cope; coped, coping; +coping saw, miter saw, file
miter; mitered, mitering, mitre; +miter saw, tape measure
trim; trimmed, trimming, trim out, retrim; +miter saw, finish nailer, coping saw, tape measure
case; cased, casing out; +miter saw, finish nailer, level
frame; framed, framing, reframe, reframed; +circular saw, framing nailer, speed square, level
sister; sistered, sistering; +framing nailer, clamps, bottle jack
block; blocked in, blocking out, add blocking; +framing nailer, saw, tape measure
fur; furred, furring out, fur out; +furring strips, shims, level
sheath; sheathed, sheathing; ~sheath in, sheeting board; +framing nailer, chalk line, circular saw
side; sided, siding; +siding nailer, tin snips, level
brace; braced, bracing; +bracing lumber, screws
shore; shored, shoring, prop, propped; +adjustable posts, bottle jack, level
jack up; jacked up, jacking; +bottle jack, posts, level
deck; decked; +drill, spacers, chalk line, circular saw
nail; nailed, nailing, renail, renailed, clavar; +nailer, nails
screw; screwed, screwing; +drill, bits
glue; glued, gluing, reglue, reglued; +adhesive, clamps
clamp; clamped, clamping; +clamps
fasten; fastened, fastening, refasten, secure, secured, attach, attached; +drill, bits
bolt; bolted, bolting; +wrench, drill
anchor; anchored, anchoring; +hammer drill, bit, blow-out bulb, torque wrench
drill; drilled, drilling, redrill; +drill, bits, vacuum
core; cored, coring, core drilled; +core drill, vacuum, water bottle
weld; welded, welding; +welder, helmet, fire extinguisher
wire; wired, wiring, rewire, rewired; +voltage tester, wire strippers, wire nuts, electrical tape
terminate; terminated, terminating; +punch-down tool, cable tester, label tape
splice; spliced, splicing; +wire strippers, wire nuts, voltage tester
pull wire; pulled wire, pulling wire, fish, fished, fishing; +fish tape, pulling lube, pull string
ground; grounded, grounding, bond, bonded; +ground clamp, voltage tester
label; labeled, labeling, relabel; +label maker, marker
trace; traced, tracing; +voltage tester, circuit tracer
energize; energized, power up; +voltage tester
commission; commissioned, commissioning, program, programmed; +manual, tester
plumb; plumbed, plumbing in, replumb, repipe, repiped; +pipe cutter, wrench, thread tape
sweat; sweating in, solder, soldered, soldering; +torch, solder, flux, heat shield, fire extinguisher
crimp; crimped, crimping; +crimp tool, rings, go/no-go gauge
press; pressed, pressing; +press tool, deburring tool
glue up; glued up, solvent weld; +solvent cement, primer, pipe cutter
thread; threaded, threading; +pipe threader, cutting oil
cap; capped, capping, cap off; +caps, pipe cutter
connect; connected, connecting, reconnect, disconnect, disconnected; +wrench, thread tape
hook up; hooked up, hooking up, hook; +wrench, thread tape
shut off; shutting off, turn off; +valve key, wrench
drain; drained, draining; +hose, bucket
bleed; bled, bleeding; +bleed key, bucket, rags
flush; flushed, flushing; +hose, bucket
snake; snaked, snaking; +drain snake, gloves, bucket, rags
unclog; unclogged, unclogging, clear, cleared; +drain snake, gloves, bucket, rags
jet; jetted, jetting; +jetter, gloves
charge; charged, charging, recharge; +gauge set, refrigerant scale
balance; balanced, balancing; +flow hood, screwdriver
duct; ducted, ducting; ~duck, ducked; +tin snips, foil tape, screws
vent; vented, venting; +foil tape, tin snips
insulate; insulated, insulating; +utility knife, stapler, respirator
flash; flashed, reflash; +tin snips, caulk gun, sealant
shingle; shingled, shingling, reshingle, roof, roofed, reroof; ~shing el, shin gel, shingel; +roofing nailer, chalk line, harness
tarp; tarped, tarping, tarp over; +tarp, furring strips, stapler
dry in; dried in, felt in, wrap, wrapped; +stapler, seam tape, utility knife
demo; demoed, demoing, demolish, demolished, gut, gutted, tear out, tore out, rip out, ripped out; +pry bar, contractor bags, dust mask, gloves
pull; pulled, pulling, yank, yanked; +pry bar, contractor bags, gloves
remove; removed, removing, take out, took out, quitar; +pry bar, contractor bags, gloves
replace; replaced, replacing, change out, changed out, cambiar; +drill, pry bar, utility knife
swap; swapped, swapping, swap out; +drill, pry bar, utility knife
fix; fixed, fixing, arreglar; +hand tools
repair; repaired, repairing, mend, mended, reparar; +hand tools
adjust; adjusted, adjusting, readjust, ajustar; +screwdriver, hex keys
align; aligned, aligning, realign; +level, string line
tighten; tightened, tightening, retighten, snug, snugged, apretar; +wrench, screwdriver
loosen; loosened, loosening; +wrench, penetrating oil
torque; torqued, torquing; +torque wrench, torque screwdriver
lube; lubed, lubing, oil, oiled, grease, greased; +lubricant, rags
free up; freed up; +penetrating oil, wrench
move; moved, moving, relocate, relocated; +tape measure, level
raise; raised, raising; +shims, level
lower; lowered, lowering; +level, tape measure
extend; extended, extending; +tape measure, saw
build; built, building, rebuild, rebuilt, make up; +saw, drill, tape measure
assemble; assembled, assembling; +driver bits, hex keys, mallet
finish; finished, finishing, finish up
dig; dug, digging, excavate, excavated, excavar; +post-hole digger, shovel, bar
trench; trenched, trenching; +trencher, shovel
backfill; backfilled, backfilling; +shovel, tamper
grade; graded, grading, regrade; +rake, level, string line
compact; compacted, compacting, tamp, tamped; +plate compactor
form; formed, forming, form up; ~concrete farms, concrete forums; +form boards, stakes, string line, level
strip forms; stripped forms, stripping forms, pull forms; +pry bar, hammer
tie rebar; tied rebar, tying rebar; +tie wire, pliers, rebar chairs
pour; poured, pouring, place concrete, colar; +screed, float, wheelbarrow, hoe
screed off; screeded, screeding; +screed board, rake
float; floated, floating; +float, screed, level
trowel; troweled, troweling; ~trow el, trouel; +trowel, knee boards
broom finish; broomed, brooming; +concrete broom, edger
saw cut; sawcut joints, saw cutting; +concrete saw, chalk line, water
cure; cured, curing, wet cure; +plastic sheeting, hose
patch concrete; parge, parged, parging; +trowel, bucket
point; pointed, repoint, tuckpoint, tuckpointed; +pointing trowel, mortar rake, hawk
stucco; stuccoed, stuccoing; ~stucko, stock oh; +hawk, trowel, scratcher
pave; paved, paving; +plate compactor, string line, rubber mallet
stretch; stretched, stretching, restretch; +knee kicker, stair tool, utility knife
refinish; refinished, refinishing; +floor sander, edger, vacuum
weatherstrip; weatherstripped; +utility knife, tape measure
rekey; rekeyed, rekeying; +key kit, screwdriver
plant; planted, planting; +shovel, rake, hose
seed; seeded, seeding, sod, sodded; +rake, spreader
mulch; mulched, mulching; +wheelbarrow, rake
stake; staked, staking, stake out; +stakes, hammer, string line
lay out; laid out, laying out, mark, marked, marking; +chalk line, tape measure, laser
measure; measured, measuring, remeasure, remeasured, medir; +tape measure, pencil, notebook
template; templated, templating; +template stock, hot glue
check; checked, checking, recheck, verify, verified, look at, checar; +tester, flashlight, tape measure
test; tested, testing, retest, probar; +tester, gauge
inspect; inspected, inspecting; +flashlight, mirror
clean; cleaned, cleaning, clean up, wipe, wiped, limpiar; +vacuum, rags, cleaner
sweep; swept, sweeping; +broom, dustpan
wash; washed, washing, pressure wash, power wash; +pressure washer, hose
vacuum; vacuumed, vacuuming; +vacuum
protect; protected, protecting, cover up; +floor protection, painter's tape
haul; hauled, hauling, haul off, tirar; +contractor bags, straps
dump; dumped, dumping; +contractor bags, straps
deliver; delivered, delivering
load; loaded, loading, unload; +straps, hand truck
return; returned, returning, take back
order; ordered, ordering, reorder, pedir
buy; bought, buying, purchase, comprar
pick up; picked up, picking up
call; called, calling, llamar
ask; asked, asking, preguntar
schedule; scheduled, scheduling, book, reschedule
meet; met, meeting
show; showed, showing, walk through; +punch list
photograph; photographed, take pictures; +phone
sign off; signed off
acclimate; acclimated, acclimating; +moisture meter
dry; dried, drying; +dehumidifier, air mover, moisture meter
treat; treated with, treating; +pump sprayer, gloves, respirator
ventilate; ventilated, air out; +box fan`,
  },
];
