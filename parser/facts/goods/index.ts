import type { Material, MaterialStatus, Quantity } from '../../types.ts';
import { isGoods, isNominal } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import { countedBehind, fitFittings, isPackSize, takeApposed } from './apposed.ts';
import { namingsOf } from './candidates.ts';
import { type Before, cuesOf } from './cues.ts';
import { keep, materialOf } from './fact.ts';
import { decided, likelihoods } from './fates.ts';
import { type Asked, goesOn } from './goesOn.ts';
import { isCount, type Lot } from './lot.ts';
import { lotsIn } from './lots.ts';
import { phrasesOf } from './mentioned.ts';
import { bestNaming, type Placed, type Told } from './naming.ts';
import { onHandIn } from './onHand.ts';
import { isRate, isStair, onlySizes } from './sizing.ts';
import { areAmiss, statedOf, tellsOfWork, unused, withCountMade } from './stated.ts';
import { asksUncounted } from './uncounted.ts';
import { type GoodsWeights, shipped } from './weights/index.ts';

/** Every lot of a talk, in the order of its words. */
export const placedIn = (talk: Talk): Placed[] =>
  talk.frames.flatMap((frame, at) => lotsIn(frame.chunks).map((lot) => ({ lot, at })));

/** A length or an area may be a measurement, which it is no more once it is goods: more must speak for it. */
const isMeasure = ({ amount, upper }: Lot) => /^(?:length|area)$/.test((upper ?? amount)?.unitKind ?? '');

/** Things that the trade has no word for, counted one by one: "two coffees". */
const isStrange = ({ amount, named, own }: Lot) =>
  amount !== null && isCount(amount) && named && own.every((c) => c.kind === 'word');

/**
 * What is needed, on hand, used, bought or gone back. Also answers which quantities were goods' counts and sizes,
 * so that they are not read as measurements.
 */
export function readMaterials(
  talk: Talk,
  weights: GoodsWeights = shipped(),
): { facts: Material[]; used: Set<Quantity> } {
  const used = new Set<Quantity>();
  const facts: Material[] = [];
  const phrases = phrasesOf(talk);
  const told: Told[] = [];
  let before: Before | null = null;
  let asked: Asked | null = null;
  // Where the name of the last goods ended: what stands within it is told.
  let named = 0;
  const worked = tellsOfWork(talk);
  for (const placed of placedIn(talk)) {
    const frame = talk.frames[placed.at]!;
    const lot = withCountMade(frame, placed.lot);
    if (frame.chunks[lot.from]!.start < named || isPackSize(frame, lot, facts.at(-1))) continue;
    if (onlySizes(frame, lot)) {
      if (lot.amount?.group?.kind === 'pair') used.add(lot.amount);
      continue;
    }
    const namings = namingsOf(talk, placed, phrases, told);
    const likeliest = bestNaming(namings, weights.naming);
    const weighed = likelihoods(weights.fates, cuesOf(talk, placed, likeliest, before));
    const chances = worked || frame.predicate !== 'none' ? weighed : unused(weighed);
    const fate = decided(chances, isMeasure(lot) || isStrange(lot) ? 0.35 : 0.5);
    const stated: MaterialStatus | null =
      statedOf(frame, lot) ??
      (asksUncounted(talk, { lot, at: placed.at }, asked) ? 'need' : null) ??
      goesOn(talk, { lot, at: placed.at }, asked);
    // "Make it two GFIs and two plates": what has a name of its own in an order is no more of the last.
    const ownName = stated === 'need' && lot.named && likeliest?.own === false;
    const naming = ownName
      ? bestNaming(
          namings.filter((n) => n.own),
          weights.naming,
        )
      : likeliest;
    // A size in front of goods is theirs even where nobody counts them: "the half inch drywall".
    for (const q of lot.sizes) if (lot.own.some(isGoods) && q.start < lot.own[0]!.start) used.add(q);
    if (fate !== 'none' || lot.kind !== 'bare') before = { placed, fate, naming };
    const status: MaterialStatus | 'none' = isStair(frame, lot) || areAmiss(frame, lot) ? 'none' : (stated ?? fate);
    if (status !== 'none') asked = { at: placed.at, status, until: lot.until };
    if (status === 'none' || !naming || (status !== 'need' && isRate(frame, lot))) continue;
    const sure = stated ? Math.max(0.8, stated === fate ? 1 - chances.none : 0) : 1 - chances.none;
    const fact = materialOf(talk, frame, { ...placed, lot }, naming, status, sure);
    if (!fact) continue;
    for (const q of [lot.amount, lot.upper, ...lot.sizes]) if (q) used.add(q);
    if (naming.chunks.some((c) => c.term && isNominal(c.term.name))) for (const q of naming.sizes) used.add(q);
    keep(facts, fact, naming);
    told.push({ placed, naming, status });
    named = naming.end ?? 0;
  }
  takeApposed(talk, facts, used);
  countedBehind(talk, facts);
  fitFittings(facts);
  return { facts: [...facts, ...onHandIn(talk, facts)], used };
}
