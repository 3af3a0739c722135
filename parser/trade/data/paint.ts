import type { Sheet } from '../sheet.ts';

/** The paint counter: coatings, fillers, sealants and what goes with them. */
export const PAINT: Sheet[] = [
  {
    kind: 'material',
    counter: 'paint',
    lines: `paint; wall paint, latex paint, emulsion, pintura, house paint; @gal, qt, tin
ceiling paint; @gal
trim paint; door paint, cabinet paint; @gal, qt
exterior paint; outside paint, masonry paint; @gal
floor paint; porch paint, garage floor paint, epoxy floor paint; @gal, kit
enamel; oil paint, alkyd paint, oil based paint, spray enamel; ~inamel, a namel; @qt, gal
spray paint; rattle can, aerosol paint; @can
chalkboard paint; @qt
primer; sealer primer, undercoat, bonding primer, all purpose primer, latex primer; ~prima, primmer, prime her, primar, prime or; @gal
stain blocker; stain blocking primer, shellac primer, shellac, odor blocking primer; ~shell lack, shall lack, shell ack, she lack; @gal, qt
drywall primer; pva primer, mist coat, drywall sealer; @gal
masonry primer; block filler, concrete primer; @gal
metal primer; rust primer, rusty metal primer; @qt, can
white paint; flat white, ceiling white, white matt, matt white, white matt paint; @gal
semigloss; semi-gloss, semi gloss paint; ~semi gloves, simi gloss; @gal
gloss; high gloss paint, gloss paint; @gal, qt
satin; satinwood, satin paint; ~satan; @gal
eggshell enamel; eggshell paint; @gal
stain; deck stain, wood stain, gel stain, semi transparent stain, solid stain, fence stain; @gal, qt
varnish; polyurethane, poly, clear coat, lacquer, finish coat, spar varnish; ~varnitch, poly your thane, pollyurethane, polly urethane, polly you're a thane, poly or a thane, poly your thing; @qt, gal
water based poly; waterborne poly, water based polyurethane; @qt, gal
wood conditioner; pre stain conditioner; @qt
danish oil; tung oil, linseed oil, hardwax oil, teak oil; @qt
wood preservative; wood preserver, end cut preservative, copper preservative; @qt, gal
wood hardener; wet rot hardener, rot hardener; @bottle
wood filler; filler, wood putty, two part filler, nail hole filler, epoxy wood filler; ~would filler; @tub, can
spackle; spackling, spackling compound, lightweight spackle, interior filler; ~speckle, sparkle, spatula paste, spec all, spackel, spackled; @tub
glazing putty; glazing compound, window putty, linseed putty; @tub
caulk; caulking, painter's caulk, paintable caulk, acrylic caulk, decorators caulk, latex caulk, siliconized caulk, caulk tube; ~cock, chalk, cough, cauk, cork, calk, kalk; @tube
silicone; clear silicone, silicone caulk, silicone sealant, sanitary silicone, mildew silicone, kitchen and bath silicone; ~silly cone, silicon, sillycone, silicoin, silly corn, sill a cone, sealer cone, silly cohn, silly con, cilia cone, silica own; @tube
sealant; butyl sealant, mastic sealant, acoustic sealant, construction sealant; ~sea lent, see lant; @tube
polyurethane sealant; urethane caulk, pu sealant, urethane sealant; @tube
fire caulk; intumescent sealant, fire stop, firestop, firestop caulk, fire rated caulk, putty pad; @tube
backer rod; foam backer rod, backing rod; ~back a rod, packer rod, backer rot; @roll, ft
caulk saver; caulk tool, caulk nozzle; @each
painter's tape; masking tape, blue tape, green masking tape, delicate tape; ~painter's cape; @roll
masking paper; masking film, pre taped film; @roll
roller cover; roller sleeve, roller, nap, roller nap, foam roller, mini roller; ~roll a cover, roller comforts, roller covered, roller cubs, rolla cover; @each
roller frame; roller cage, roller handle; @each
extension pole; roller pole; @each
paint brush; brush, sash brush, chip brush, angled brush, cutting in brush; @each
paint pad; stain pad, edger pad; @each
paint tray; tray liner, tray, bucket grid, paint grid; @each
paint pail; paint kettle, cut bucket; @each
stir stick; paint stirrer; @each
paint filter; paint strainer, cone strainer; @each
drop cloth; dust sheet, plastic sheeting, poly sheeting, plastic, canvas drop, drop sheet; ~drop clock, drop clothes; @each, roll
zip door; dust barrier, zipper door, dust barrier pole; @kit
sandpaper; sanding sponge, sanding disc, sanding screen, glasspaper, lija, sanding block, emery cloth, sanding belt; ~sand piper; @pack, each
steel wool; wire wool, abrasive pad; @pack
tack cloth; tack rag; @pack
paint stripper; paint remover, chemical stripper; @can
heat gun nozzle; scraper blade; @each
thinner; mineral spirits, paint thinner, white spirit, turpentine, turps; @can
denatured alcohol; @can
acetone; lacquer thinner, xylene; ~acid tone; @can
degreaser; sugar soap, tsp, tsp substitute; @bottle, box
deglosser; liquid sander; @can
mold killer; mildew remover, mould remover, biocide; @bottle
rags; rag, bag of rags, lint free cloth; @box, bag
tint; colorant, touch up paint, touch up kit; @can
texture spray; wall texture, orange peel texture, knockdown texture, popcorn texture, ceiling texture; @can, bag
wallpaper; wallcovering, lining paper, wall liner; @roll
wallpaper paste; wallpaper adhesive, paste; @bucket
wallpaper stripper; wallpaper remover; @bottle
anti slip additive; grit additive, deck grit; @bag
epoxy coating; floor coating, garage floor epoxy; @kit
elastomeric coating; elastomeric, elastomeric paint; @bucket
spray tip; sprayer tip, tip guard; @each
putty knife filler; body filler; @can
flat latex; interior latex, exterior latex, acrylic latex; @gal
alkyd; cabinet coating; @gal
vinyl silk; magnolia; @gal
limewash; lime wash, whitewash; @gal
stain killer; damp seal, knotting, knotting solution; @can
cold galvanizing; zinc spray, galv spray; @can
clear finish; clear coat finish; @gal
wax; paste wax, beeswax; @can
cutting board oil; butcher block oil, mineral oil, decking oil, deck oil; @bottle
wood brightener; deck brightener; @gal
stain pen; touch up pen, putty stick, wax stick, fill stick, filler stick; @each
bleach; wood bleach, oxalic acid; @bottle
builders bog; bog, crack patch; @tub
sealing strip; caulk strip; @roll
butyl; ms polymer; @tube
intumescent; fire collar, firestop collar; @each
green tape; tape roll; @roll
rosin; red rosin, builders paper, contractor paper, kraft paper, brown paper, masker paper; @roll
sticky mat; tack mat; @each
zipper; door zipper; @each
nine inch cover; nine inch sleeve, roller set; @pack
120 grit; 220 grit, 150 grit, 80 grit, one twenty grit, two twenty grit, eighty grit, one fifty grit; @pack
abrasive; sanding sheet, wet and dry paper, drum paper; @pack
stripper; adhesive remover, caulk remover, silicone remover, rust remover, rust converter, graffiti remover, efflorescence remover; @bottle
disinfectant; vinegar, ammonia, dish soap; @bottle
rubbing alcohol; isopropyl, alcohol, methylated spirits, meths; @bottle
solvent; naphtha; @can
paper towels; shop towels, towels, microfiber, microfiber cloth, cheesecloth; @box
wipes; wet wipes; @pack
paint can; paint lid; @each
wallpaper border; grasscloth, liner paper; @roll`,
  },
];
