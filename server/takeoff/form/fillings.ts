import Fraction from 'fraction.js';
import { BAG_YIELD, holeVolume } from '../calculators/concrete.ts';
import { cover } from '../calculators/cover.ts';
import { groutPerFoot } from '../calculators/grout.ts';
import { mortarCoverage } from '../calculators/mortar.ts';
import { absurdLength, type Refusal, refuse, show, toBuy } from '../calculators/reckoned.ts';
import { feetPerTube } from '../calculators/sealant.ts';
import type { Form } from './asked.ts';
import { covered, type FormAnswer, inches } from './covered.ts';
import { lengthOf } from './measure.ts';

export function mortar(form: Extract<Form, { kind: 'mortar' }>): FormAnswer | Refusal {
  const notch = form.notch.map((side) => lengthOf(side, 'in', 'the notch')) as [Fraction, Fraction];
  const pounds = new Fraction(form.bagPounds ?? 50);
  const feet = mortarCoverage(notch, pounds, form.backButtered ?? false);
  if (!feet) return refuse(`how much does a bag cover with a ${form.notch.join(' x ')} notch? The bag tells`);
  const assumed = `${show(feet)} sq ft a bag of ${show(pounds)} lb, the low end of published charts: the label goes first`;
  return covered(form, 1, { unit: 'bag', holds: feet }, [assumed], 'published charts by notch');
}

export function grout(form: Extract<Form, { kind: 'grout' }>): FormAnswer | Refusal {
  const [length, width] = form.tile.map((side) => lengthOf(side, 'in', 'the tile')) as [Fraction, Fraction];
  const found = groutPerFoot(
    { length, width, thickness: lengthOf(form.thickness, 'in', 'the thickness') },
    lengthOf(form.joint, 'in', 'the joint'),
  );
  if (!found.ok) return found;
  const holds = new Fraction(form.bagPounds).div(found.value);
  return covered(form, 1, { unit: 'bag', holds }, [found.working], "joint volume at 1.6 kg a litre, tilers' reference");
}

export function sealant(form: Extract<Form, { kind: 'sealant' }>): FormAnswer | Refusal {
  const [width, depth] = form.bead.map((side) => lengthOf(side, 'in', 'the bead')) as [Fraction, Fraction];
  const tube = feetPerTube({ width, depth }, form.ounces === undefined ? undefined : new Fraction(form.ounces));
  if (!tube.ok) return tube;
  const run = lengthOf(form.run, 'ft', 'the run');
  const silly = absurdLength(run, 'a run', new Fraction(2000));
  if (silly) return silly;
  const pack = { unit: 'tube', holds: tube.feet };
  const found = cover({ extent: run, unit: 'ft', waste: new Fraction(form.waste ?? 0).div(100), pack });
  if (!found.ok) return found;
  const { working, assumptions } = found;
  return {
    ok: true,
    buy: [{ quantity: toBuy(found), unit: 'tube' }],
    working: `${tube.working}; ${working}`,
    assumptions,
    source: 'volume of the bead; 231/128 cu in a fluid ounce',
  };
}

export function holes({
  holes: count,
  diameter,
  depth,
  bagPounds,
}: Extract<Form, { kind: 'holes' }>): FormAnswer | Refusal {
  if (!Number.isInteger(count) || count <= 0 || count > 200) return refuse(`${count} holes: is that right?`);
  const one = holeVolume({ diameter: inches(diameter, 'a hole'), depth: inches(depth, 'the depth') });
  if (!one.ok) return one;
  const total = one.cubicFeet.mul(count);
  const bags = total.div(BAG_YIELD[bagPounds]!);
  return {
    ok: true,
    buy: [{ quantity: bags.ceil().valueOf(), unit: 'bag' }],
    working: `${one.working}; x ${count} = ${show(total)} cu ft; ${show(BAG_YIELD[bagPounds]!)} cu ft a bag: ${show(bags)}`,
    assumptions: ['no post taken out of the concrete'],
    source: 'bag yield pages',
  };
}

/** A cubic yard, past which a truck is cheaper than bags: common practice, no source. */
const READY_MIX = new Fraction(27);

export function slab(form: Extract<Form, { kind: 'slab' }>): FormAnswer | Refusal {
  const thick = inches(form.thick, 'the slab');
  if (thick.compare(0) <= 0 || thick.compare(24) > 0) return refuse(`a slab ${show(thick)} in thick: is that right?`);
  const yields = BAG_YIELD[form.bagPounds]!;
  const found = covered(form, 1, { unit: 'bag', holds: yields.mul(12).div(thick) }, [
    `${show(thick)} in thick, ${show(yields)} cu ft a bag of ${form.bagPounds} lb`,
  ]);
  if (!found.ok) return found;
  const volume = yields.mul(found.buy[0]!.quantity);
  const truck = volume.compare(READY_MIX) > 0 ? ['over a cubic yard: ask for ready-mix, common practice'] : [];
  return { ...found, assumptions: [...found.assumptions, ...truck], source: 'bag yield pages' };
}
