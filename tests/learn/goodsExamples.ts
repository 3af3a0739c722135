import { namingsOf } from '../../parser/facts/goods/candidates.ts';
import { type Before, cuesOf } from '../../parser/facts/goods/cues.ts';
import { FATES, type Fate } from '../../parser/facts/goods/fates.ts';
import { placedIn } from '../../parser/facts/goods/index.ts';
import { phrasesOf } from '../../parser/facts/goods/mentioned.ts';
import { bestNaming, type Naming, type Placed, type Told } from '../../parser/facts/goods/naming.ts';
import { phrase, type Talk } from '../../parser/facts/talk.ts';
import type { Weights } from '../../parser/weights.ts';
import type { Gold } from '../score/lib/corpus.ts';
import { share } from '../score/lib/wording.ts';
import type { Choice } from './choice.ts';
import type { Example } from './softmax.ts';

/** One note laid open, each lot with the answer that it holds. */
export interface Lesson {
  talk: Talk;
  lots: { placed: Placed; namings: Naming[]; gold: Gold<'materials'> | null }[];
}

const textOf = (naming: Naming) =>
  `${phrase(naming.chunks)} ${naming.code ?? ''} ${naming.sizes.map((q) => q.quote).join(' ')}`;

const names = (gold: Gold<'materials'>, naming: Naming) => share(gold.item, textOf(naming)) >= 0.5;

/** Lays a note open and hands each answer to the lot that holds it: same count first, then name, then place. */
export function lessonOf(talk: Talk, wanted: readonly Gold<'materials'>[]): Lesson {
  const phrases = phrasesOf(talk);
  const lots: Lesson['lots'] = placedIn(talk).map((placed) => ({
    placed,
    namings: namingsOf(talk, placed, phrases, []),
    gold: null,
  }));
  const pairs = wanted.flatMap((gold) => lots.map((lot) => ({ gold, lot, score: fit(talk, gold, lot) })));
  const given = new Set<object>();
  for (const { gold, lot, score } of pairs.sort((a, b) => b.score - a.score)) {
    if (score <= 0 || given.has(gold) || lot.gold) continue;
    lot.gold = gold;
    given.add(gold);
  }
  // Once more, knowing what was told before.
  const told: Told[] = [];
  for (const lot of lots) {
    lot.namings = namingsOf(talk, lot.placed, phrases, told);
    const naming = lot.gold ? worthiest(lot.gold, lot.namings) : undefined;
    if (naming) told.push({ placed: lot.placed, naming, status: lot.gold!.status });
  }
  return { talk, lots };
}

function worthiest(gold: Gold<'materials'>, namings: readonly Naming[]): Naming | undefined {
  const worths = namings.map((n) => worth(gold, n));
  const most = Math.max(0, ...worths);
  return most > 0 ? namings[worths.indexOf(most)] : undefined;
}

function fit(talk: Talk, gold: Gold<'materials'>, { placed, namings }: Lesson['lots'][number]): number {
  const { chunks } = talk.frames[placed.at]!;
  const { lot } = placed;
  const [start, end] = [chunks[lot.from]!.start, chunks[lot.until - 1]!.end];
  const at = talk.text.indexOf(gold.quote);
  const both = Math.min(end, at + gold.quote.length) - Math.max(start, at);
  if (both <= 0) return 0;
  const count = (lot.upper ?? lot.amount)?.value.valueOf() ?? (lot.article || null);
  const same =
    gold.quantity === null || count === null ? gold.quantity === count : Math.abs(count - gold.quantity) < 1e-6;
  const named = namings.some((n) => names(gold, n));
  if (!named && !(same && count !== null)) return 0;
  return (same ? 2 : 0) + (named ? 1.5 : 0) + both / Math.min(end - start, gold.quote.length);
}

/** What a name is worth: it must hold half of the wanted words, and better little else. */
function worth(gold: Gold<'materials'>, naming: Naming): number {
  if (!names(gold, naming)) return 0;
  return 0.6 + 0.4 * share(phrase(naming.chunks), `${gold.item} ${gold.size ?? ''}`) ** 2;
}

/** For lots that hold an answer: which of the names that they may have is the one. */
export const choicesIn = (lesson: Lesson): Choice[] =>
  lesson.lots.flatMap(({ namings, gold }) =>
    gold && namings.length > 1
      ? [{ note: 0, answers: namings.map((n) => ({ signs: n.features, worth: worth(gold, n) })) }]
      : [],
  );

/** An answer that may be left out teaches less. */
const MAY_BE_LEFT_OUT = 0.3;

/** Every lot with what became of it. */
export function examplesIn(lesson: Lesson, naming: Weights): Example[] {
  let before: Before | null = null;
  let named = 0;
  return lesson.lots.flatMap(({ placed, namings, gold }) => {
    const { start } = lesson.talk.frames[placed.at]!.chunks[placed.lot.from]!;
    // What stands within the name of other goods is never asked about.
    if (start < named && !gold) return [];
    const best = bestNaming(namings, naming);
    const fate: Fate = gold ? gold.status : 'none';
    const features = cuesOf(lesson.talk, placed, best, before);
    if (fate !== 'none' || placed.lot.kind !== 'bare') before = { placed, fate, naming: best };
    if (gold) named = best?.end ?? 0;
    return [{ features, label: FATES.indexOf(fate), weight: gold?.optional ? MAY_BE_LEFT_OUT : 1 }];
  });
}
