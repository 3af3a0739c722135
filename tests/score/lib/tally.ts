import { readNote } from '../../../parser/index.ts';
import type { Fact, Span } from '../../../parser/types.ts';
import type { Gold, ListName, Note } from './corpus.ts';
import { LISTS } from './corpus.ts';
import { type FactOf, RULES } from './rules.ts';

export interface Tally {
  gold: number;
  got: number;
  found: number;
  strict: number;
}

/** `missed`: not found. `extra`: found, but not there. `wrong`: found with an attribute wrong. */
export interface Miss {
  note: string;
  list: ListName;
  sort: 'missed' | 'extra' | 'wrong';
  wanted: object | null;
  got: object | null;
}

export interface Score {
  lists: Record<ListName, Tally>;
  all: Tally;
  misses: Miss[];
}

const nothing = (): Tally => ({ gold: 0, got: 0, found: 0, strict: 0 });

/** Share of the shorter quote that both cover. One much longer than was wanted points at nothing, and gets 0. */
function overlap(wanted: Span, got: Span): number {
  const [wantedLength, gotLength] = [wanted.end - wanted.start, got.end - got.start];
  if (gotLength > 2.5 * wantedLength + 25) return 0;
  const both = Math.min(wanted.end, got.end) - Math.max(wanted.start, got.start);
  return Math.max(0, both) / Math.max(1, Math.min(wantedLength, gotLength));
}

/** One to one, the best pair first; a pair needs some overlap or wording in common. */
function pairUp(scores: readonly { i: number; j: number; score: number }[]): Map<number, number> {
  const pairs = new Map<number, number>();
  const taken = new Set<number>();
  for (const { i, j, score } of [...scores].sort((a, b) => b.score - a.score || a.i - b.i || a.j - b.j)) {
    if (score <= 0 || pairs.has(i) || taken.has(j)) continue;
    pairs.set(i, j);
    taken.add(j);
  }
  return pairs;
}

/** A nominal size told as a measurement is no error where a wanted material has that size. */
const isSizeOfGoods = (note: Note, fact: Fact) =>
  fact.kind === 'measurement' && note.gold.materials.some((m) => m.size?.includes(String(fact.value)));

/** Counts what the facts of one note hold of one list's answers. */
export function judge<L extends ListName>(list: L, note: Note, facts: readonly Fact[], score: Score): void {
  const rule = RULES[list];
  const wanted = note.gold[list] as Gold<L>[];
  // A material that is only mentioned or on its way is in none of the statuses that are scored.
  const got = facts.filter(
    (f) => f.kind === rule.kind && !(f.kind === 'material' && (f.status === 'mentioned' || f.status === 'ordered')),
  ) as FactOf[L][];
  const span = (quote: string): Span => {
    const start = note.text.indexOf(quote);
    return { start, end: start + quote.length };
  };
  const pairs = pairUp(
    wanted.flatMap((g, i) => got.map((p, j) => ({ i, j, score: rule.found(g, p, overlap(span(g.quote), p)) }))),
  );
  const tally = score.lists[list];
  const answered = new Set(pairs.values());
  const miss = (sort: Miss['sort'], g: object | null, p: object | null) =>
    score.misses.push({ note: note.id, list, sort, wanted: g, got: p });

  wanted.forEach((g, i) => {
    // An optional fact is neither right nor wrong, told or left out.
    if (g.optional) return;
    tally.gold++;
    const p = pairs.has(i) ? got[pairs.get(i)!]! : null;
    if (!p) {
      miss('missed', g, null);
      return;
    }
    tally.got++;
    tally.found++;
    if (rule.strict(g, p)) tally.strict++;
    else miss('wrong', g, p);
  });
  got.forEach((p, j) => {
    if (answered.has(j) || isSizeOfGoods(note, p)) return;
    tally.got++;
    miss('extra', null, p);
  });
}

/** A score with nothing counted yet. */
export const unscored = (): Score => ({
  lists: {
    measurements: nothing(),
    materials: nothing(),
    problems: nothing(),
    followUps: nothing(),
    done: nothing(),
  },
  all: nothing(),
  misses: [],
});

/** Reads every note and counts what the answers hold of it. */
export function scoreNotes(notes: readonly Note[]): Score {
  const score = unscored();
  for (const note of notes) {
    const { facts } = readNote(note.text, { saidAt: note.saidAt, areas: note.areas });
    for (const list of LISTS) judge(list, note, facts, score);
  }
  for (const tally of Object.values(score.lists))
    for (const key of ['gold', 'got', 'found', 'strict'] as const) score.all[key] += tally[key];
  return score;
}

/** Harmonic mean of precision and recall for `hits` of them; 1 where there was nothing to say and nothing was said. */
export const f1 = (hits: number, { gold, got }: Tally) => (gold + got ? (2 * hits) / (gold + got) : 1);
export const precision = ({ found, got }: Tally) => (got ? found / got : 1);
export const recall = ({ found, gold }: Tally) => (gold ? found / gold : 1);
