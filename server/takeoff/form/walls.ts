import Fraction from 'fraction.js';
import { cover } from '../calculators/cover.ts';
import { COMPOUND_GALLONS, DRYWALL_SOURCE, SCREWS, TAPE_FEET } from '../calculators/drywall.ts';
import { absurdLength, areCoats, type Refusal, refuse, show, toBuy } from '../calculators/reckoned.ts';
import type { Form, Walls } from './asked.ts';
import { ARITHMETIC, type FormAnswer } from './covered.ts';
import { lengthOf } from './measure.ts';

/** A storey higher than this is asked about, in feet. Common practice, no source. */
const HIGHEST = new Fraction(40);

interface Face {
  ok: true;
  /** Square feet, openings off. */
  area: Fraction;
  working: string;
}

/** Square feet of a room's four walls, of its ceiling where that is asked, less its openings. */
function faceOf(form: Walls): Face | Refusal {
  const [length, width, height] = [
    lengthOf(form.length, 'ft', 'the length'),
    lengthOf(form.width, 'ft', 'the width'),
    lengthOf(form.height, 'ft', 'the height'),
  ];
  const silly =
    absurdLength(length, 'a length') ?? absurdLength(width, 'a width') ?? absurdLength(height, 'a height', HIGHEST);
  if (silly) return silly;
  let area = length.add(width).mul(2).mul(height);
  const steps = [`2 x (${show(length)} + ${show(width)}) x ${show(height)} ft = ${show(area)} sq ft`];
  if (form.ceiling) {
    area = area.add(length.mul(width));
    steps.push(`+ ceiling ${show(length.mul(width))} = ${show(area)}`);
  }
  for (const { width: across, height: up, count } of form.openings ?? []) {
    const [w, h] = [lengthOf(across, 'ft', 'an opening'), lengthOf(up, 'ft', 'an opening')];
    if (w.compare(0) <= 0 || h.compare(0) <= 0) return refuse('an opening must be more than 0');
    if (!Number.isInteger(count) || count < 1 || count > 100) return refuse(`${count} openings: is that right?`);
    if (h.compare(height) > 0) return refuse(`an opening ${show(h)} ft high in a wall of ${show(height)} ft`);
    area = area.sub(w.mul(h).mul(count));
    steps.push(`- ${count} x ${show(w)} x ${show(h)} = ${show(area)}`);
  }
  return { ok: true, area, working: steps.join('; ') };
}

/** Paint, primer, insulation or panels on the walls of a room. */
export function walls(form: Extract<Form, { kind: 'walls' }>): FormAnswer | Refusal {
  const coats = form.coats ?? 1;
  if (!areCoats(coats)) return refuse(`${coats} coats: is that right?`);
  const face = faceOf(form);
  if (!face.ok) return face;
  const extentWorking =
    coats > 1 ? `${face.working}; x ${coats} coats = ${show(face.area.mul(coats))} sq ft` : face.working;
  return bought(form, { ...face, area: face.area.mul(coats), working: extentWorking }, [
    { unit: form.unit, holds: new Fraction(form.holds) },
  ]);
}

/** Board of a room's walls with the screws, tape and compound that it takes. */
export function board(form: Extract<Form, { kind: 'board' }>): FormAnswer | Refusal {
  const [width, length] = form.sheet.map((side) => lengthOf(side, 'ft', 'the sheet')) as [Fraction, Fraction];
  if ([width, length].some((side) => side.compare(1) < 0 || side.compare(16) > 0))
    return refuse(`a sheet of ${show(width)} x ${show(length)} ft: is that right?`);
  const face = faceOf(form);
  if (!face.ok) return face;
  return bought(
    form,
    face,
    [
      { unit: 'sheet', holds: width.mul(length) },
      { unit: 'screw', holds: SCREWS.inverse() },
      { unit: 'ft of tape', holds: TAPE_FEET.inverse() },
      { unit: 'gal of compound', holds: COMPOUND_GALLONS.inverse() },
    ],
    DRYWALL_SOURCE,
  );
}

/** The same square feet in each of several goods; the working is that of the first. */
function bought(
  { waste }: Walls,
  { area, working }: Face,
  packs: { unit: string; holds: Fraction }[],
  source = ARITHMETIC,
): FormAnswer | Refusal {
  const buy: FormAnswer['buy'] = [];
  let first = '';
  for (const pack of packs) {
    const found = cover({
      extent: area,
      unit: 'sq ft',
      waste: new Fraction(waste ?? 0).div(100),
      pack,
      extentWorking: working,
    });
    if (!found.ok) return found;
    first ||= found.working;
    buy.push({ quantity: toBuy(found), unit: pack.unit });
  }
  const assumptions = waste === undefined ? ['no waste added: none was given'] : [];
  return { ok: true, buy, working: first, assumptions, source };
}
