import Fraction from 'fraction.js';
import { cover } from '../calculators/cover.ts';
import { battsOf, baysOf } from '../calculators/insulation.ts';
import { absurdLength, type Refusal, refuse, show, toBuy } from '../calculators/reckoned.ts';
import { cutList } from '../cutlist/cutList.ts';
import type { Form } from './asked.ts';
import { ARITHMETIC, counted, type FormAnswer, inches } from './covered.ts';
import { lengthOf } from './measure.ts';

export function batts({ wall, spacing, height, batt }: Extract<Form, { kind: 'batts' }>): FormAnswer | Refusal {
  const bays = baysOf(inches(wall, 'the wall', 'ft'), inches(spacing, 'the spacing'));
  if (!bays.ok) return bays;
  const found = battsOf(bays.count, { height: inches(height, 'the height', 'ft'), batt: inches(batt, 'a batt') });
  return found.ok ? counted({ ...found, working: `${bays.working}; ${found.working}` }) : found;
}

/** Feet of the longest stick that a yard sells. Common practice, no source. */
const LONGEST_STICK = new Fraction(60);

export function cuts({ pieces, stock, kerf }: Extract<Form, { kind: 'cutList' }>): FormAnswer | Refusal {
  const sticks = stock.map((length) => lengthOf(length, 'ft', 'the stock'));
  const odd = sticks.map((feet) => absurdLength(feet, 'the stock', LONGEST_STICK)).find(Boolean);
  if (odd) return odd;
  const found = cutList({
    pieces: pieces.map(({ length, count }) => ({ length: inches(length, 'a piece'), count })),
    onHand: [],
    stock: sticks.map((feet) => feet.mul(12)),
    kerf: inches(kerf ?? '1/8', 'the blade'),
  });
  if (!found.ok) return found;
  return {
    ok: true,
    buy: found.buy.map(({ length, count }) => ({ quantity: count, unit: `stick of ${show(length.div(12))} ft` })),
    working: found.working,
    assumptions: kerf ? [] : ['1/8 in for the blade, common practice'],
    source: found.proved ? 'arithmetic: every smaller purchase is ruled out' : ARITHMETIC,
  };
}

/** More boxes than this on one run is a slip. Common practice, no source. */
const MOST_ENDS = 200;
/** Feet of one run of pipe or wire. Common practice, no source. */
const LONGEST_RUN = new Fraction(2000);

/** Pipe, wire or trim along a run, with what is left over at each box or fitting to make it up. */
export function run(form: Extract<Form, { kind: 'run' }>): FormAnswer | Refusal {
  const [length, makeUp] = [lengthOf(form.run, 'ft', 'the run'), lengthOf(form.makeUp ?? '0', 'ft', 'the make-up')];
  const ends = form.ends ?? 0;
  const silly = absurdLength(length, 'a run', LONGEST_RUN);
  if (silly) return silly;
  if (!Number.isInteger(ends) || ends < 0 || ends > MOST_ENDS) return refuse(`${ends} boxes: is that right?`);
  if (makeUp.compare(0) < 0 || makeUp.compare(20) > 0) return refuse(`${show(makeUp)} ft at each box: is that right?`);
  if (ends > 0 && form.makeUp === undefined) return refuse('how much is left over at each box?');
  const pack = form.stock === undefined ? null : { unit: 'length', holds: lengthOf(form.stock, 'ft', 'the stock') };
  const odd = pack && absurdLength(pack.holds, 'the stock', LONGEST_RUN);
  if (odd) return odd;
  const found = cover({
    extent: length.add(makeUp.mul(ends)),
    unit: 'ft',
    waste: new Fraction(form.waste ?? 0).div(100),
    pack,
    extentWorking: `${show(length)} ft${ends ? ` + ${ends} x ${show(makeUp)} ft` : ''} = ${show(length.add(makeUp.mul(ends)))} ft`,
  });
  if (!found.ok) return found;
  return {
    ok: true,
    buy: [{ quantity: toBuy(found), unit: pack ? `length of ${show(pack.holds)} ft` : 'ft' }],
    working: found.working,
    assumptions: form.waste === undefined ? ['no waste added: none was given'] : [],
    source: ARITHMETIC,
  };
}
