import { keyWords, likeness, sameArea } from '../trade/likeness.ts';
import type { Done, Fact, FollowUp, Material, Measurement, Problem } from '../types.ts';

/** Wordings that share this much of the shorter one speak of the same thing. */
const SAME = 0.75;

/** One list out of a talk in which things are said twice: a fact told again is the first one, brought up to date. */
export function merged(facts: readonly Fact[]): Fact[] {
  const kept: Fact[] = [];
  for (const fact of facts) {
    const at = kept.findLastIndex((earlier) => isSame(earlier, fact));
    if (at < 0) kept.push(fact);
    else {
      const one = joined(kept[at]!, fact);
      if (one.start === kept[at]!.start) kept[at] = one;
      else {
        kept.splice(at, 1);
        kept.push(one);
      }
    }
  }
  return kept.sort((a, b) => a.start - b.start || a.end - b.end);
}

function isSame(a: Fact, b: Fact): boolean {
  if (!sameArea(a.area, b.area)) return false;
  if (a.kind === 'followUp' && b.kind === 'done') return alike(a.task, b.task);
  if (a.kind !== b.kind) return false;
  switch (a.kind) {
    case 'material':
      return isSameGoods(a, b as Material);
    case 'measurement':
      return isSameSize(a, b as Measurement);
    case 'problem':
      return (
        alike(a.thing, (b as Problem).thing) &&
        alike(`${a.thing} ${a.defect}`, `${(b as Problem).thing} ${(b as Problem).defect}`)
      );
    case 'followUp':
      return alike(a.task, (b as FollowUp).task);
    case 'done':
      return alike(a.task, (b as Done).task);
    case 'decision':
      return b.kind === 'decision' && alike(a.what, b.what);
    case 'spending':
      return b.kind === 'spending' && a.amount === b.amount && a.on === b.on;
    default:
      return false;
  }
}

const alike = (a: string, b: string) => likeness(keyWords(a), keyWords(b)) >= SAME;

function isSameGoods(a: Material, b: Material): boolean {
  return (
    a.status === b.status &&
    b.counts !== 'more' &&
    (a.size === b.size || !a.size || !b.size) &&
    (a.unit === b.unit || a.quantity === null || b.quantity === null) &&
    alike(a.item, b.item)
  );
}

const isSameSize = (a: Measurement, b: Measurement) => a.exact === b.exact && a.unit === b.unit && alike(a.of, b.of);

/** What was known before, with what the second telling adds or changes. */
function joined(a: Fact, b: Fact): Fact {
  const sure = Math.max(a.confidence, b.confidence);
  if (a.kind === 'material' && b.kind === 'material') {
    if (b.quantity === null) return { ...a, size: a.size ?? b.size, area: a.area ?? b.area, confidence: sure };
    const told = { ...b, size: b.size ?? a.size, area: b.area ?? a.area };
    if (a.quantity === null || a.quantity === b.quantity) return { ...told, at: a.at, confidence: sure };
    if (b.counts === 'total') return told;
    return { ...told, confidence: 0.45, ask: `${a.exact} or ${b.exact} of ${b.item}?` };
  }
  if (a.kind === 'problem' && b.kind === 'problem') {
    const state = b.state === 'fixed' ? b : a;
    return { ...state, area: a.area ?? b.area, suspected: a.suspected && b.suspected, confidence: sure };
  }
  if (a.kind === 'followUp' && b.kind === 'followUp')
    return {
      ...a,
      area: a.area ?? b.area,
      who: b.who ?? a.who,
      due: b.due ?? a.due,
      notBefore: b.notBefore ?? a.notBefore,
      waitingFor: b.waitingFor ?? a.waitingFor,
      condition: a.condition && b.condition,
      confidence: sure,
    };
  return a.kind === b.kind ? { ...a, confidence: sure } : b;
}
