import Fraction from 'fraction.js';
import { bagYield, holeVolume, USUAL_BAG, yieldAsked, yieldWords } from '../calculators/concrete.ts';
import { actualSide } from '../calculators/lumber.ts';
import { absurdPacks, show } from '../calculators/reckoned.ts';
import type { ComputedLine } from '../types.ts';
import { line, type Row } from './line.ts';

/** Concrete of the post holes, in bags; a string is what stands in the way. */
export function holeConcrete(row: Row, holes: number): ComputedLine | string {
  if (holes <= 0) return 'how many holes?';
  const sides = row.section?.split('x').map((s) => actualSide(new Fraction(s)));
  const inside = row.lessPost && sides ? sides[0]!.mul(sides[1]!) : undefined;
  const one = holeVolume({ ...row.hole!, ...(inside && { inside }) });
  if (!one.ok) return one.why;
  const said = row.terms.ratios.find((r) => r.per === 'bag' && (r.unit === 'cu ft' || r.unit === null));
  const usual = bagYield(row.terms.packSize);
  const holds = said?.value ?? usual?.yields;
  if (!holds) return yieldAsked(row.terms.packSize);
  const assumptions: string[] = [];
  if (!said && usual) assumptions.push(yieldWords(usual));
  if (!row.lessPost && row.item === 'fence post') assumptions.push('the post is not taken out of the concrete');
  const total = one.cubicFeet.mul(holes);
  const whole = one.cubicFeet.div(holds).ceil().mul(holes);
  const waste = row.terms.waste;
  const amount = row.eachHole ? whole.mul(holds) : total.mul(waste ? waste.add(1) : 1);
  const many = absurdPacks(amount, { unit: 'bag', holds });
  if (many) return many.why;
  const packs = amount.div(holds);
  const working = `${one.working}; x ${holes} holes = ${show(total)} cu ft${waste && !row.eachHole ? `; + ${show(waste.mul(100))} % = ${show(amount)}` : ''}; ${show(holds)} cu ft a bag: ${row.eachHole ? `${show(one.cubicFeet.div(holds))} a hole, so ${packs.toString()}` : `${show(packs)}, so ${packs.ceil().toString()}`}`;
  return {
    ...line(row, 'concrete mix', row.terms.packSize ?? `${USUAL_BAG} lb`, 0, working, assumptions),
    amount,
    unit: 'cu ft',
    pack: { unit: 'bag', holds },
    source: said ? 'arithmetic from what was said' : 'bag yield pages: 40 lb 0.30, 60 lb 0.45, 80 lb 0.60 cu ft',
  };
}
