import type { Sheet } from '../sheet.ts';

/** More of what is found wrong: how things fail, sound, stand and look, and work left wrong. */
export const FAILINGS: Sheet[] = [
  {
    kind: 'defect',
    lines: `seeping through; seepage, oozing, ooze, weepy, wicking, trickling, trickle, dribbling, dribble
spraying; spurting, squirting, spitting
water coming in; water getting in, water intrusion, letting water in
damp patch; damp spot, wet spot, tide mark, water spot
flooded; flooding, flood
burst; bursted, ruptured
frozen solid; frozen up, froze, icing up, iced over, frosted over
running slow; drains slowly, draining slowly, slow to drain, won't go down
doesn't flush; won't flush, weak flush, not flushing, ghost flush, double flush
gurgle; siphoning, burping, bubbling up
choked; clogged up, blocked up, root intrusion, packed solid
collapsed; collapse, caved in, cave in, caving in, collapsing
corroding; corroded through, calcified, crusty, crusted, crusted over, furred up, limed up
sludge; sludged, sediment, gunk, gunked up, gummed up, gunky
smelly; stinky, smells bad, stale
too hot; scalding, hot to the touch, warm to the touch
not hot enough; too cold, no hot
air locked; air bound
knocks; ticking, clicks, whistles, squealing, squeals, hissing, hisses, whining, whines, screeches, rumbling, clunking, clanking, thumping, groaning, too loud, loud, humming loudly
chattering; chatters, chatter, pulsing, pulsating, vibrates
surging; jerky, jerks, stutters
shuts off; shuts down, cuts out, cuts off, kicks out, locks out, drops out, dropping out
faulty; faulting, error code, fault code, throwing a code, lockout
blinking; blinks, dims, dimming, too dim, too bright, glare
intermittent; glitchy, spotty, comes and goes
unresponsive; not responding, won't respond, doesn't respond, no response, nothing happens, does nothing
won't connect; won't pair, won't sync, not connecting, weak signal, no internet, crackling
won't turn off; always on, stays on, won't power on, won't shut off completely, not shutting off
inop; not operational, out of order, non functional, not functioning, doesn't function, stopped working, quit working
knackered; bust, fried, on the fritz, buggered
trips out; tripping out, trips every time, won't hold
hot ground reverse; open hot, bootleg ground
charred; burn mark, burn marks, scorch mark, sparked, arced, arcs
overheated; overfused, over fused, overload
not grounded; not bonded
buried box
splintered; splintering, splinters, splinter
crumbled; crumble, crumbly, disintegrating, deteriorated, deteriorating, decayed, decay, rotting, rotten through, powdery
breaking; breakage, snapped in half, bashed in, smashed up, busted up, broke off
squishy; bouncy, springy, bounces, too bouncy, spongey, flexes, flexing, flex in, give in it, gives way
deflecting; deflects, drooping, droops, droopy, drooped, hanging low, hanging down
swaybacked; swayback, hogged, bellied out, bowing out, bows out, bow in, bowed in
cups; cupped boards, crown in, peaking, peaked, tenting, tented
popped up; popped off, popping up, popped, lifting up
ridging; ridged, telegraphing, telegraphs, seam showing, seams showing, joint showing, joints showing, shadowing, photographing
streaky; streaks, streaked, streak, patchy, shading, cloudy, hazy, dull, dull spot
crackled; crackling finish, crazed, alligator
cratered; craters, pin holed, pinholed, pinholes in
wrinkled; wrinkles, wrinkle, rippled, ripples, ripple, bunched, bunching, curls, curling up, buckles
gapped; gapping, gappy, gap showing, gapped open, opening up, seam open, joint open
separates; separation, pulled apart, pulling apart, coming away, came away, come away, came apart, unglued, came unglued, debonding
loosened; loosened up, looseness, slop in, has play, play in it, too much play
wiggle; wiggling, wiggled, wobbling, wobbled, rickety, rocky, unsteady, unstable, not stable, tippy
leans; leaning over, tilts, tilting
out of true; not true, out of parallel, not parallel, out of position, cockeyed, catawampus, cattywampus, skewed, skew, out of wack
twist; twisting, twists, warps, warp, canted
inconsistent; irregular, unequal, not consistent
lumpy; lumps, lump, bumpy, bumps, bump in
dip; dips, dipping, birdbath, flat spot
off color; color variation
fogging; fogging up, condensation inside, condensation between
ice dam; ice dams, ice build up
stuck shut; stuck open, stuck closed, swollen shut, painted closed
hangs up; hung up, hanging up, sticks shut, won't budge, doesn't budge
hard to turn; hard to close, hard to move, hard to slide, stiff, too stiff
scrapes; drags on, dragging on, rubs at, rubbing on
bind; bound up, binds up, binding at, hinge bound
swings open; swings shut, drifts open, drifts shut, creeps open, pops open, springs back
won't slide; doesn't slide, won't swing, doesn't swing, won't shut, doesn't shut, won't stay, doesn't stay closed, doesn't stay open
won't engage; doesn't engage, not engaging, won't unlock, not locking, can't open, can't close
doesn't seal; not sealing, poor seal, not seated, not seating
won't close all the way; doesn't close all the way, not closing all the way
not aligned; misalignment, doesn't align, don't align, alignment off, not meeting, doesn't meet, not touching
too shallow; too deep, too tall, too heavy, too dark, too steep, too rough, too dry
overcut; over cut, overdriven, over driven, underdriven, overdrilled
high nailed; undernailed, under nailed
not connected; not hooked up, not attached, not strapped, not flashed, not braced, not plugged in
unmarked; unlabelled, not marked, wrong label
backordered; back ordered, back order, on backorder, out of stock, discontinued
short shipped; shipped short, shorted us, one short, two short
incomplete
overlooked; left undone, left off
exposed fastener; exposed fasteners
light coverage; poor coverage, thin coverage, bad coverage, not covering, doesn't cover
drip mark; drip marks, paint spots, paint bleeding
peel; peels off, peeling off, flaked, flaky, flakes off
blister; blisters, bubble, bubbles, air bubble, air bubbles
swells; swelling up
shrunk; shrank, shrinking, shrinkage
shifted; shifting, slipped down, sank, sunk in, settlement, heaving, heaves, undermined
washed away; washing out, eroding, erodes, sloughing
pooling; water pooling, water sitting, ponded, not draining away, poor drainage, bad drainage
sloped wrong; pitched wrong, slopes toward
hack job; botched, bodged, bodge, dodgy, shoddy, poor workmanship, bad workmanship, substandard
ragged; jagged, burr, burrs, chip out, saw marks, tool marks, hammer marks, hammer mark
smudge; smudges, smudged, smeared, smears, fingerprints, scuffed up
grimy; grubby, grime, soot, sooty, soap scum, residue, glue residue, adhesive residue
algae; moss, mossy, lichen, overgrown, weeds
wilted; dying, bare patch, brown spots, dead spots
tannin; tannin bleed, yellowing
mold spots; mould spots, mold growth, black spots, fungus, fungal
white powder; salt deposits, efflorescing, spall, spalls, delamination, honeycombed, bugholes
notched too deep; over notched, overnotched
worn through; worn spot, worn spots, wearing thin
stripped threads; cross threading, sheared, shear, rounded off head
doesn't hold
defective; defect, defects, no good, bad shape, poor shape, rough shape, poor condition
improper; improperly, incorrect, incorrectly, not correct, not right
tore up; torn up, dinged up, scraped up, banged
chewed through; gnawed, gnaw marks
wasp nest; wasps nest, bird nest, bees nest, nest, squirrels, raccoon, roaches, beetles, woodworm, infestation, pests
vandalized; graffiti, stolen
wrong material; wrong swing, wrong handing, wrong profile, wrong thickness, wrong gauge, wrong type, wrong kind, wrong fitting, wrong location, wrong depth, wrong direction
back to front; wrong way round, inverted, mixed up, switched around
code violation; violation, violates code, doesn't meet code, not up to code, non compliant, noncompliant, fails code
hazardous; dangerous, slippery
backdrafting; back drafting, sooting
cold spot; cold spots, hot spot, hot spots
low charge; low on charge, undercharged, overcharged
blows cold; doesn't cool, won't cool, blows hot, blowing hot
stuffy; humid, too humid
deformed; misshapen, out of shape, bent over, kicked in, caved
blown off; knocked over, knocked loose, falling down, fell down, falling over, falling in, fallen, fell apart, falls out, fell out, popped out of
slips out; slipped out, screws backing out, coming unscrewed, unhooked, unattached, coming undone, undone`,
  },
];
