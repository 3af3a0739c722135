import type { Sheet } from '../sheet.ts';

/** Goods by the word that crews use for them: a maker's word that became the thing's own, a clipped word, Spanish or Portuguese. */
export const SHORTHAND: Sheet[] = [
  {
    kind: 'material',
    counter: 'hardware',
    lines: `clip; fixing clip, holding clip; @bag, each
tapcon; @box
zip screw; zip in screw; @box
pan head screw; pan head; @box
velcro; hook and loop; @roll
double stick tape; double stick, two sided tape; @roll
soft close stay; @pair
shelf stud; @bag
hex head screw; hex head; @box
confirmat; confirmat screw; @box
cuña; @bag
perno; @bag
arandela; @bag`,
  },
  {
    kind: 'material',
    counter: 'electrical',
    lines: `romex; ~roll mex, row mex; @roll, ft
black tape; @roll
wago; ~way go; @box
liquidtight conduit; liquidtight, sealtight, seal tight; @ft
wiring device; dvc, dvcs; @each
c wire adapter; @each`,
  },
  {
    kind: 'material',
    counter: 'plumbing',
    lines: `sharkbite; shark bite; @each
fernco; @each
oakum; @roll
repair kit; rebuild kit; @each
diaphragm; @each
flow restrictor; @each
silicona; @tube`,
  },
  {
    kind: 'material',
    counter: 'concrete',
    lines: `sonotube; sono tube; ~son a tube; @each
quikrete; ~quick crete, quick creet; @bag
durabond; @bag
massa; masa, massa corrida; @bag`,
  },
  {
    kind: 'material',
    counter: 'insulation',
    lines: `roxul; ~rocks all; @bag
armaflex; ~arm a flex; @each`,
  },
  {
    kind: 'material',
    counter: 'paint',
    lines: `lixa; @sheet`,
  },
];
