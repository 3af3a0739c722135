import type { Sheet } from '../sheet.ts';

/** The drywall and insulation counter. */
export const DRYWALL: Sheet[] = [
  {
    kind: 'material',
    counter: 'drywall',
    lines: `drywall; sheetrock, sheet rock, plasterboard, gypsum board, gyp board, wallboard, tablaroca, drywall sheet, gypsum, half inch board; ~drive all, dry whale, dry law, dry wool, try wall, dry walk, drive wall, driver wall, drywalk, sheep rock, she truck, sheet rack, cheap rock, sheet rog, sheet wreck, jip rock, gip rock, plaster bored, plaster bird, jip some, gyp some; @sheet
moisture board; green board, moisture resistant drywall, mr board, purple board, moisture resistant board; @sheet
fire rated drywall; type x, fireboard, fire board, fire rated board, type c; ~type ex; @sheet
soundproof drywall; acoustic drywall, sound board, acoustic plasterboard; @sheet
flexible drywall; bendable drywall, quarter inch board; @sheet
lightweight drywall; ultralight board; @sheet
exterior sheathing board; glass mat sheathing, exterior gypsum; @sheet
abuse resistant drywall; impact board, high impact board; @sheet
insulated plasterboard; laminate plasterboard; @sheet
shaftliner; shaft liner, shaft wall; @sheet
joint compound; mud, drywall mud, jointing compound, jointing, premix, joint cement; ~join compound, joint come pound, drywall mug, joint compost, joint company, joint compond, giant compound, joint compact, joint camp hound; @bucket, box
all purpose compound; all purpose mud, all purpose; @bucket, box
topping compound; topping mud, topping, finishing compound, lite mud; @box, bucket
taping compound; taping mud; @bucket
setting compound; hot mud, quick set, setting type compound, forty five minute mud, twenty minute mud, ninety minute mud, setting mud, five minute mud; ~hot mug, sitting compound; @bag
drywall tape; joint tape, scrim tape; @roll
paper tape; @roll
mesh tape; fiberglass tape, fibreglass tape, scrim; ~mess tape; @roll
corner tape; flex corner tape, flexible corner, metal corner tape; @roll
corner bead; angle bead, cornerbead, thin coat bead, paper faced corner bead, vinyl bead, metal bead; ~corner bee, corner beat, corner bean, cornered bead, corner beed, corner bede, corner bid, corn a bead, coroner bead; @stick, each
bullnose bead; rounded corner bead; @stick
j bead; j trim, j mold; ~jay bead; @stick
l bead; tear away bead, l trim; @stick
plaster stop bead; @stick
drywall screw; plasterboard screw, coarse thread screw, fine thread screw; @box
drywall nail; cup head nail; @box
drywall clip; drywall repair clip; @pack
drywall adhesive; plasterboard adhesive, dab adhesive; @tube, bag
drywall patch kit; patch kit, wall patch, self adhesive patch; @each
plaster; patching plaster, finish plaster, multi finish, yeso, veneer plaster, browning, gauging plaster, skim plaster; ~plaza; @bag
bonding agent; plaster bonder, pva bonder, blue grit; @gal
bonding coat; bonding plaster; @bag
metal lath; expanded metal lath, eml, rib lath; ~metal laugh; @sheet
wood lath; lath and plaster; @bundle
resilient channel; rc channel, sound channel, hat channel, furring channel; @stick
sound clip; isolation clip, acoustic clip; @box
insulation; fiberglass insulation, batt insulation, batt, aislante, batt of insulation, fibreglass, pink insulation, glass wool, kraft faced, unfaced; ~bats, insolation, insulting, bad insulation, bat insulation, bath insulation, insulate shun, instillation; @bag, bundle, roll
mineral wool; rock wool, stone wool, mineral wool batt; ~mineral will; @bag
blown insulation; cellulose, loose fill, blow in insulation, blown in; @bag
sound insulation; sound batt, acoustic insulation, sound attenuation batt; @bag
foam board; rigid foam, rigid insulation, insulation board, pir board; ~phone board, foam bored; @sheet
xps; extruded polystyrene, blue board foam, pink board; @sheet
eps; expanded polystyrene, bead board foam; @sheet
polyiso; foil faced foam, iso board; ~polly iso; @sheet
spray foam kit; two part foam, closed cell foam, open cell foam; @kit
rafter vent; baffle, attic baffle, vent chute, insulation baffle; @each, box
insulation hanger; insulation support; @box
attic hatch cover; attic tent, attic stair cover; @each
vapor barrier; vapour barrier, vapor retarder, polythene, vapour control layer; ~vapor carrier, vapor berry, vapor berry are, paper barrier, vape or barrier, favor barrier, vapor barrel, vapour carrier; @roll
damp proof membrane; dpm, dpc, damp proof course; @roll
acoustic ceiling tile; ceiling tile, drop ceiling tile, act, lay in tile; @box
ceiling grid; t bar, drop ceiling grid, suspended grid; @each
main tee; main runner; ~main tea; @each
cross tee; ~cross tea; @each
wall angle; perimeter trim; @stick
hanger wire; ceiling wire; @roll
metal stud; steel stud, light gauge stud; @each
metal track; steel track, stud track, deflection track, top track; @each
framing screw; self drilling screw, lath screw, wafer head screw; @box
frp panel; frp, fiberglass reinforced panel, wall cladding panel; @sheet
frp trim; division bar, frp adhesive; @stick
air sealing foam gasket; sill gasket, sill seal; ~seal seal; @roll
acoustic putty; acoustic mat, mass loaded vinyl; @roll
rock; half inch rock, five eighths rock, sheets of rock; @sheet
five eighths board; 5/8 board, ceiling board, gib, gib board, stretch board, four by eight sheet, twelve foot board, ten foot board; @sheet
mold resistant board; mold board, mould resistant board, wet area board, paperless board; @sheet
sound deadening board; resilient board; @sheet
fibre cement sheet; fc sheet; @sheet
drywall scrap; drywall scraps; @each
ready mixed compound; green top, blue top, skim coat compound, base coat compound, top coat compound, bedding compound; @bucket
level five; level five compound; @bucket
fiber tape; sticky tape, metal tape, fire tape; @roll
reveal bead; shadow bead, arch bead, archway bead, square bead, flexible bead, z bead, render bead; @stick
fine thread; coarse thread, fine threads, coarse threads; @box
bonding; hardwall, plaster of paris, dot and dab, pva; @bag
plaster bead; plasterers bead; @stick
carrying channel; cold rolled channel, black iron channel; @stick
deflection clip; deflection track clip; @box
loft roll; pink stuff; @roll
foil wrap; radiant barrier, bubble foil, sarking foil; @roll
closed cell; open cell; @kit
dense pack; dense pack cellulose, blown fiberglass, vermiculite, perlite; @bag
foam sheet; foil board, phenolic board; @sheet
air barrier; smart membrane; @roll
attic dam; insulation dam; @each
can light cover; insulation cover, insulation blanket; @each
shower board; wall protection; @sheet`,
  },
];
