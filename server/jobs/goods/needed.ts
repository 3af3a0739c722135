/** A need that is told meets the need that stands: said twice it is one, "one more" adds, "make it three" replaces. */
import type Fraction from 'fraction.js';
import type { Material } from '../../../parser/types.ts';
import { amountText, most } from './amounts.ts';
import { covered } from './left.ts';
import type { Position } from './position.ts';

/**
 * Takes in that goods are wanted.
 *
 * @param amount null where nobody said how many
 * @param at when it was told
 * @param still told as what is still missing: "we're one short"
 * @returns what the order tells of it
 */
export function takeNeed(
  position: Position,
  fact: Material,
  amount: Fraction | null,
  at: string,
  still: boolean,
): string {
  position.wanted = { at, quote: fact.quote, rule: fact.rule, confidence: fact.confidence };
  if (position.dropped) Object.assign(position, { dropped: false, need: null, areaNeeds: new Map() });
  if (fact.area) position.rooms.add(fact.area);
  if (!amount) {
    position.needUncounted = true;
    return position.need === null ? 'needed, no count said' : 'said again';
  }
  const before = position.need;
  // "Make the casing twelve seven footers", wanted by the foot so far.
  if (fact.counts === 'total' && fact.unit === 'each' && /^(?:ft|m)$/.test(position.unit ?? ''))
    position.unit = fact.unit;
  position.need = needAfter(position, amount, fact, still);
  position.met = false;
  return needWords(before, position.need, amount, fact);
}

/** What is needed in all, now that this was said. */
function needAfter(p: Position, amount: Fraction, fact: Material, still: boolean): Fraction {
  const before = p.need;
  const fresh = fact.area !== null && !p.areaNeeds.has(fact.area);
  const inArea = fresh && p.areaNeeds.size > 0;
  if (fact.counts === 'total') p.areaNeeds.clear();
  else if (fact.area) p.areaNeeds.set(fact.area, amount);
  if (fact.counts === 'total') return amount;
  const have = covered(p);
  // "One more goes by the bar, that's the one we're short": the rest of what was wanted, told again.
  if (still && before?.sub(have).sub(p.ordered).compare(amount) === 0) return before;
  if (fact.counts === 'more') return (before ?? have).add(amount);
  if (before === null) return p.used.compare(0) > 0 ? have.add(amount) : amount;
  const left = before.sub(have).sub(p.ordered);
  if (amount.compare(left) === 0 || (still && left.compare(0) > 0)) return before;
  // Another room's need comes on top; a room's share of what was said for all of them does not.
  if (inArea) return before.add(amount);
  // All that was wanted is there: this is a new need. Some of it is there: all of it was said again, or still so many.
  if (left.compare(0) <= 0) return have.add(p.ordered).add(amount);
  if (have.compare(0) > 0) return amount.compare(before) === 0 ? before : have.add(amount);
  if (fresh) return most(before, amount);
  // Said again of one room among several: the others' needs stand.
  return fact.area && p.areaNeeds.size > 1 ? [...p.areaNeeds.values()].reduce((sum, one) => sum.add(one)) : amount;
}

/** One statement of a need, told so that whoever adds the statements up comes to what is needed. */
function needWords(before: Fraction | null, after: Fraction, amount: Fraction, { unit, counts }: Material): string {
  const said = amountText(amount, unit);
  if (before === null || after.equals(before.add(amount)))
    return `${said}${before || counts === 'more' ? ' more' : ''} needed, said`;
  if (after.equals(before)) return `${amount.equals(before) ? '' : `${said} of them `}said again`;
  if (after.equals(amount)) return `${amountText(before, null)} made ${said}`;
  return `${said} needed, said: ${amountText(after, unit)} in all`;
}
