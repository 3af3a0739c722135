import type Fraction from 'fraction.js';
import { type Amount, absurdPacks, absurdWaste, type Reckoned, refuse, show } from './reckoned.ts';

export interface Covering {
  /** Net, openings off, in `unit`. */
  extent: Fraction;
  unit: string;
  /** `0.1` for ten per cent. */
  waste: Fraction;
  /** What was taken for granted. */
  assumptions?: string[];
  /** What one purchase unit covers, in `unit`; null where `unit` itself is bought. */
  pack: { unit: string; holds: Fraction } | null;
  /** How the extent came about: `8 ft x 11 ft 6 in = 92 sq ft`. */
  extentWorking?: string;
  source?: string;
}

/**
 * Goods that cover: extent, plus waste, in packs. Floors, walls, roofs, insulation, boards and runs all end here.
 * Refuses nothing-to-cover, negative or runaway waste and an empty pack.
 */
export function cover(c: Covering): Reckoned {
  if (c.extent.compare(0) <= 0) return refuse('nothing left to cover: check the sizes');
  const silly = absurdWaste(c.waste);
  if (silly) return silly;
  if (c.pack && c.pack.holds.compare(0) <= 0) return refuse(`how much does a ${c.pack.unit} cover?`);
  const amount = c.extent.mul(c.waste.add(1));
  const many = absurdPacks(amount, c.pack);
  if (many) return many;
  const steps = [c.extentWorking ?? `${show(c.extent)} ${c.unit}`];
  if (c.waste.compare(0) > 0) steps.push(`+ ${show(c.waste.mul(100))} % = ${show(amount)} ${c.unit}`);
  const answer: Amount = {
    ok: true,
    amount,
    unit: c.unit,
    pack: c.pack,
    working: '',
    assumptions: c.assumptions ?? [],
    source: c.source ?? 'arithmetic from what was said',
  };
  steps.push(roundUp(answer));
  return { ...answer, working: steps.filter(Boolean).join('; ') };
}

/** `20 sq ft a box: 3.21, so 4`. */
function roundUp({ amount, unit, pack }: Pick<Amount, 'amount' | 'unit' | 'pack'>): string {
  const packs = pack ? amount.div(pack.holds) : amount;
  const whole = packs.ceil().toFraction();
  const each = pack ? `${show(pack.holds)} ${unit} a ${pack.unit}: ${show(packs)}` : '';
  if (packs.equals(packs.ceil())) return each && `${each}`;
  return pack ? `${each}, so ${whole}` : `so ${whole}`;
}
