import type { Sheet } from '../sheet.ts';

/** The flooring counter. */
export const FLOORING: Sheet[] = [
  {
    kind: 'material',
    counter: 'flooring',
    lines: `vinyl plank; lvp, luxury vinyl, lvt, vinyl plank flooring, plank, luxury vinyl plank, luxury vinyl tile; ~final plank, vinyl plan, l v p, vinyl blank, looks very vinyl plank, luxury vinyl plant, vinyl plant, vinyl prank; @box
laminate; laminate flooring, laminate floor; ~lemon it, lamb in it, lemon eight, lemonade; @box
hardwood; hardwood flooring, hardwood floor, oak flooring, engineered hardwood, engineered flooring, wood floor, piso, floorboard, strip flooring, wood flooring; ~hard would; @box, sq ft
parquet; herringbone floor, wood block floor; ~par k, parkay; @box, sq ft
bamboo flooring; bamboo; @box
cork flooring; cork tile; @box
sheet vinyl; vinyl sheet, linoleum, lino, vinyl flooring, vinyl; ~lie no; @sq ft, roll
rubber flooring; gym flooring; @roll, sq ft
carpet; carpeting, alfombra; ~car pit; @sq yd, box
carpet tile; @box
stair runner; carpet runner; @ft
carpet pad; pad, padding, underlay, carpet underlay; ~carpet path; @roll
tack strip; tackless strip, gripper rod, gripper, carpet gripper; ~tax trip, tax strip, tact strip, tack trip, tacks strip, attack strip, tack's trip; @box
seam iron tape; carpet seam tape; @roll
underlayment; underlay foam, floor underlayment, foam underlayment, cork underlayment, acoustic underlay; ~under lamb int, underlainment, under lament, under layman, under lay mint, under lame ent, under laymen, under lay men; @roll
moisture barrier underlay; floor moisture barrier; @roll
floor glue; flooring adhesive, vct adhesive, mastic, wood floor adhesive, urethane adhesive; ~floor blue, mass stick, mast stick, mastik; @bucket
moisture test kit; calcium chloride test; @kit
floor patch; feather finish, patching compound, floor patching compound, skim patch; @bag
vct; vinyl composition tile; ~v c t; @box
rubber base; cove base, vinyl base, wall base; ~rubber bass; @roll, box
cove base adhesive; base adhesive; @tube
stair nose; stair nosing, nosing; ~stair knows, stair noise, stare nose; @each
end cap molding; square nose, end molding; @each
floor register flush; flush mount vent; @each
floor protection; floor paper, rosin paper, floor protection board, floor protection paper; ~roseland paper; @roll
floor finish; floor poly, floor varnish, sealer coat; @gal
floor wax; floor polish; @gal
floor filler; trowel filler, floor crack filler; @tub
flooring cleat; flooring nail, flooring staple; @box
seam sealer; seam weld; @kit
transition track; reducer track; @each
entry mat; walk off mat; @each
rigid core; spc, wpc, loose lay; @box
vinyl roll; rubber roll; @roll
laminate boards; hardwood boards, reclaimed flooring, herringbone flooring, chevron flooring, block flooring, engineered; @box
cork floor; @box
epoxy flake; floor flake; @box
rubber mat; area rug, rug; @each
broadloom; berber; @sq yd
stair carpet; carpet remnant, carpet squares; @each
carpet tacks; carpet cushion, rebond; @roll
sheet goods; safety flooring; @sq ft
moisture barrier; underlayment roll, floor liner; @roll
moisture mitigation; epoxy moisture barrier; @kit
threshold strip; door strip, seam binder, seam strip, scotia bead, beading; @each`,
  },
];
