import type { Sheet } from '../sheet.ts';

/** What is found wrong, in the words people use of it. */
export const DEFECTS: Sheet[] = [
  {
    kind: 'defect',
    lines: `cracked; crack, cracking, fractured, agrietado, rajado, grieta; ~crackt
hairline crack; hairline, stress crack; ~airline crack
split; splitting, checked and split
broken; broke, busted, roto, rota
snapped; snapped off, broken off, sheared off
shattered; smashed, spiderwebbed
leaking; leak, leaky, leaked, fuga, fugas, tirando agua, leaking water, leaks water; ~leeking, leek
weeping; weeps, seeping, seep
dripping; drip, drippy, gotea, goteando, goteo
seized; frozen, siezed, seized up, froze up, rusted shut; ~ceased
stuck; sticking, sticks, atorado, trabado, painted shut
jammed; jammed up
binding; binds
loose; floppy, flojo, floja, came loose, come loose, suelto, suelta, rattly; ~lucent
wobbly; wobbles, wobble, rocking, rocks, wiggles, wiggly, shaky, moving around, rocks when you sit
missing; not there, never came, gone missing, didn't come, falta, faltan, left out
rotted; rotten, rot, podrido, podrida, dry rot, wood rot, rotted out; ~rotten out
soft; spongy, punky, mushy, soft spot, mush; ~spunky
swollen; swelled, swelled up, puffed up, swelling, hinchado
blown out; blown, blowout
stained; discolored, discoloured, yellowed, manchado, ghosting
water stain; watermark, water mark, stain on ceiling, water ring; ~water stein
out of level; unlevel, not level, off level, un level, off of level; ~out of leveled
out of plumb; not plumb, off plumb, off of plumb; ~out of plum, out of plump
out of square; out of whack, racked, not square, off square; ~out of squared
crooked; chueco, wonky, sloping, leaning, tilted, cocked, torcido, askew
not straight; wavy, off the line
out of round; egged out
dead; doesn't work, not working, won't turn on, muerto, quit, conked out, kaput, no sirve, no funciona
no power; no juice, sin luz
burned out; burnt out, blew up
flickering; flickers, flicker, strobing; ~flick ring
buzzing; buzzes
humming; hums
noisy; noise, making noise, grinding noise, whistling, knocking, clicking, banging
rattles; rattling, rattle
squeaks; squeaky, squeaking, squeak, screeching, creaks, creaky, creaking; ~squeakers
chirping; chirps, beeping
tripping; trips, keeps tripping, tripped, trips the breaker
overheating; running warm, running hot, gets hot, overheats
arcing; sparking, sparks
shorted; short circuit, shorting out, corto circuito, dead short
scorched; burnt, burned, melted, singed, quemado
slams; slamming
rubs; rubbing, scrapes the floor, rubs on
drags; dragging
catches; catching, hits the trim
hits; clashes, bumps into
nail pops; nail pop, screw pop, nail popped; ~nail pup, male pops
chipped; chip, chips, chipping, descarapelado
scratched; scratch, scratches, rayado, scratched up
dented; dent, dinged, ding, abollado
gouged; gouge, nicked, nick
scuffed; scuff, scuff mark, scrape mark, marred
bubbled; bubbling, bubbles in, bubbled up
peeling; peels, peeled, despegado
flaking; alligatoring, alligatored
blistered; blistering, blisters in
delaminated; delaminating, delam; ~delaminate it
lifting; lifted up, coming up, coming off, lifts up
curling; curled, curled up
warped; warping; ~wharfed
bowed; bow, bowed out, bowing; ~boughed
cupped; cupping
buckled; buckling
twisted; twist in
crowned; crowning
sagging; sags, sag, sagged
humped; hump, hump in
dipped; dip in, bellied, belly in, back pitched, negative slope
heaved; frost heave
settled; sunk, sunken, sinking
crushed; smashed in
torn; tore, rip in, roto en dos, tear in
ripped; ripped off
frayed
punctured; puncture, nail through
mold; mould, moldy, mouldy, moho, black mold, mushrooms; ~bold spots
mildew; mildewed, mildewy
corroded; corrosion, green crud, oxidized, oxidado
rust; rusted, rusty, rusted out, rusting, rusted through
pitted; pitting
pinhole; pin hole, pinhole leak
kinked; kink, crimped flat, kink in
pinched; mashed, squashed
bent; bent up, doblado
clogged; plugged up, blocked, blockage, tapado, tapada, stopped up, plugged, clog; ~clogging, cloged
backed up; backing up, backs up
slow drain; draining slow, drains slow, slow draining
won't drain; doesn't drain, no drena, not draining, holds water
gurgling; gurgles
overflowing; overflowed, running over
backwards; inside out, wrong way, reversed, al reves, backward, installed backwards
upside down; boca abajo
hot and cold reversed; hot and cold switched, crossed hot and cold
reversed polarity; polarity reversed, hot neutral reversed
wired wrong; miswired
mislabeled; not labeled, unlabeled, mislabelled
wrong side; wrong hand
wrong size; wrong length, wrong width, wrong height
wrong color; wrong colour, wrong shade, wrong sheen, doesn't match the color
wrong finish
wrong one; wrong part, wrong model, the wrong, wrong item, wrong style, wrong product
wrong spot; wrong place, in the wrong place
damaged; damage, dañado, shipping damage, arrived damaged
messed up; screwed up, jacked up
beat up; banged up
ruined; trashed, wrecked
water damage; water damaged, flood damage
chewed up; chewed
shot; junk, toast, cooked
worn; worn out, wore out, gastado, threadbare
stripped; stripped out, cross threaded, stripped screw, rounded off
bad splice; open splice, loose splice
failed; gave out, let go, failing
hollow; hollow spot, hollow sounding, drummy, unbonded, hueco, debonded
lippage; lipped
high spot; high corner; ~hi spot
low spot; low corner
uneven; not even, disparejo
unflat; not flat, out of flat
ponding; puddling, puddles, standing water, ponds
bald spot; bare spot
doesn't fit; don't fit, won't fit, does not fit, not fitting, no fit, no cabe, no queda
doesn't line up; don't line up, won't line up, misaligned, holes don't line up, out of alignment, not lined up
off center; off centre, not centered
doesn't match; don't match, mismatched, mismatch
won't close; does not close, doesn't close, no cierra, not closing
won't latch; doesn't latch, not latching
won't open; doesn't open, no abre, hard to open
won't lock; doesn't lock, lock doesn't catch
won't reset; doesn't reset, won't stay on
won't start; doesn't start, won't light, won't ignite
won't stay open; won't stay shut
doesn't reach; won't reach, comes up short, an inch short, not long enough
too short; cut short, cut too short, muy corto
too long; muy largo
too big; oversized, too large
too small
too high; sits high
too low; sits low
too wide
too narrow
too tight; tight fit
too thick
too thin
too close
too far; too far out, too far apart
not to code; against code, out of code, illegal
no permit; unpermitted
unsafe; hazard, trip hazard, unprotected
over spanned; overspanned, undersized
double tapped; double lugged, double tap
overfilled; box fill over, overloaded
ungrounded; no ground, open ground; ~on grounded
open neutral; lost neutral, floating neutral
failed inspection; red tagged, didn't pass, failed final
wet; damp, soaked, soggy, saturated, mojado, humedo, waterlogged
condensation; sweating, sweats
moisture high; too wet
gaps in; gap in
holiday; holidays, missed spot, thin spot, shiner
runs in; drips in the paint, sagging paint, paint run, paint drip
brush mark; lap mark, roller mark
flashing through; bleed through, bleeding through, showing through
fisheye; fish eye, orange peel finish
overspray; paint splatter, paint drips on
bad patch
crack at the seam
unfilled hole
cold joint
honeycomb; honeycombing, rock pocket
spalled; spalling, pop out; ~spall din
efflorescence; salts coming through; ~effervescence
crazing; craze crack, spider crack
scaling
infested; bugs, bees, wasps, insects
termites; termite, carpenter ants, ants
mice; mouse droppings, droppings, rodent, rats, rat
smells; smell, stinks, odor, odour, musty, huele
sewer smell; sewer gas, drain smell
gas smell; smells gas, gas leak, gas odor
kicked out; sticking out, popped out, popping, pops
proud; proud of the wall, sitting proud, not flush, proud of
recessed too deep; set too deep, box too deep
pulled away; separated, separating, coming apart, pulling away, opened up
coming loose; hanging off, fell off, falling off, came off, detached, dangling, se cayo
falling apart; crumbling, crumbles, desmoronando
runs; runs all night, keeps running, running constantly, won't shut off, won't stop running
cycling; short cycling, kicking on and off
low pressure; no water pressure, weak pressure
weak flow; low flow, no flow
no hot water; not enough hot water, lukewarm
no water; no agua
underpowered; low voltage
no heat; not heating, blowing cold
not cooling; no cooling, blowing warm, no ac
iced up; freezing up, ice on the coil
split pair; open pair, crossed pair
no signal; no connection, no link, no dial tone, offline
bad seal; broken seal, fogged, fogged up, foggy, failed seal
drafty; draughty, draft coming in, air leak, daylight showing
dirty; filthy, sucio, greasy
unfinished work; half done, not done right, sloppy
exposed; not covered
unsupported; not supported
not anchored; not secured, unsecured, not fastened
not sealed; unsealed, open gap
not vented; unvented, not vented out
back siphon; cross connection
hammering; water hammer, pipes bang, banging pipe
vibrating; vibration, shakes
grout haze; haze on
blotchy; uneven color
etched; water spots, hard water stain
faded; sun faded, fading
sticky; tacky, not drying
scaled; scale buildup, mineral buildup, limescale, calcium buildup
out of line
bulging; bulge, bulged
expired; out of date, past due
recalled; obsolete
miscut; cut wrong, mis cut
mismeasured; measured wrong
overtightened; over tightened, cracked when tightened
undertightened; not tight
uninsulated spot
compacted poorly; not compacted, soft ground
eroded; washed out, washout, erosion`,
  },
];
