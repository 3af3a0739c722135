import { remembered } from '../../../../parser/remembered.ts';
import { wordsOf } from '../../../../parser/trade/likeness.ts';
import { dot, type Weights } from '../../../../parser/weights.ts';
import type { Entry } from '../../types.ts';
import type { Standing } from '../board.ts';
import { ailmentsOf } from './ailments.ts';
import type { Clause } from './clauses.ts';
import type { HeardClause } from './heard.ts';
import { GONE } from './manner.ts';
import { goesBy, type Rank, type Shared } from './shared.ts';

/** Signs that come together again and again: put in words once, and weighed once. */
interface Together {
  names: readonly string[];
  /** Those that weigh anything, in their order; null until they are asked for. */
  weights: readonly number[] | null;
}

/** What speaks for a clause telling of an item as finished, beside the signs of the clause itself. */
export interface Signs {
  together: readonly Together[];
  own: readonly string[];
  /** "No drips at the faucet": its own flaw, named with its thing, is gone. */
  plain: boolean;
}

/** The note that tells it. */
export interface Teller {
  entry: Entry;
  /** Its moment, as `Date.parse` has it. */
  at: number;
  /** Items that the note has met. */
  met: readonly Standing[];
}

const MOST = 4;
const upTo = (most: number, n: number) => String(Math.min(most, n));

/** Signs that a clause tells of an item as finished. */
export function signsOfEnding(
  { clause, read }: HeardClause,
  { entry, at, met }: Teller,
  item: Standing,
  { own, rarest, before, named, head, part, strange }: Shared,
  rank: Rank,
): Signs {
  const sort = item.problem === null ? 'work' : 'flaw';
  const days = Math.round((at - Date.parse(item.history.at(-1)!.at)) / 86_400_000);
  const when = days < 1 ? 'none' : days < 3 ? 'few' : 'many';
  const due = item.readyOn !== null && item.readyOn <= entry.at.slice(0, 10);
  const counts = `${upTo(3, own)}|${upTo(MOST, rarest)}|${upTo(2, before)}|${upTo(2, named)}`;
  const seen = `${sort}|${read}|${head}|${counts}|${rank}|${part}|${upTo(MOST, strange)}|${met.includes(item)}|${when}|${due}|${item.state}`;
  const words: string[] = [];
  const together = [signsOfSeen(seen)];
  if (item.problem !== null) together.push(signsOfCure(clause, item, head, read, words));
  const gone = clause.signs.includes(GONE);
  const flawSaid = item.problem !== null && sharesWord(wordsOf(item.problem), clause.words);
  if (flawSaid) words.push(`flaw said ${gone}`);
  const { tokens } = clause;
  const others = new Set<string>();
  for (let i = 0; i < tokens.length; i++) {
    const { word, stem } = tokens[i]!;
    if (!goesBy(item, stem)) others.add(word);
    if (stem !== item.head) continue;
    const next = tokens[i + 1]?.word ?? '-';
    words.push(`after ${next}`, `after ${next} ${tokens[i + 2]?.word ?? '-'}`, `ahead ${tokens[i - 1]?.word ?? '-'}`);
  }
  for (const word of others) words.push(`word ${word}`);
  return { together, own: words, plain: flawSaid && gone && head === 'own' };
}

function sharesWord(some: ReadonlySet<string>, others: ReadonlySet<string>): boolean {
  for (const word of some) if (others.has(word)) return true;
  return false;
}

/** Every sign by its name. */
export const namesOf = ({ together, own }: Signs): string[] => [...together.flatMap(({ names }) => names), ...own];

/** What the signs weigh, on top of what the clause weighs by itself. */
export function weigh({ together, own }: Signs, by: Weights, clause: number): number {
  let sum = clause;
  for (const signs of together) {
    signs.weights ??= signs.names.map((name) => by.get(name) ?? 0).filter((weight) => weight !== 0);
    for (const weight of signs.weights) sum += weight;
  }
  return dot(by, own, sum);
}

/** Signs put in words from what was seen, each of few values: the same come again and again, and are put in words once. */
const signsOfSeen = remembered((seen): Together => {
  const [sort, read, head, own, rarest, before, named, rank, part, strange, met, days, due, state] = seen.split('|');
  const names = [
    'any',
    sort!,
    `read ${read} ${sort}`,
    `head ${head}`,
    `head ${head} read ${read}`,
    `own ${own}`,
    `own ${own} read ${read}`,
    `rarest ${rarest}`,
    `rarest ${rarest} read ${read} head ${head}`,
    `before ${before}`,
    `named ${named} head ${head}`,
    `rank ${rank}`,
    `rank ${rank} read ${read}`,
    `rank ${rank} head ${head}`,
    `part ${part}`,
    `part ${part} read ${read}`,
    `part ${part} rank ${rank}`,
    `strange ${strange} ${part}`,
    `met ${met}`,
    `days ${days}`,
    `due ${due}`,
    state!,
  ];
  return { names, weights: null };
});

/** Whether what ails the item is told as gone: "drips", and "bone dry under there now". Puts each word of cure down besides. */
function signsOfCure(
  { ails, cures, denies }: Clause,
  { problem, history }: Standing,
  head: string,
  read: string,
  besides: string[],
): Together {
  const own = ailmentsOf(`${problem} ${history[0]!.words ?? ''}`);
  const words = new Set<string>();
  for (const ailment of own) for (const word of cures[ailment]!) words.add(word);
  for (const word of words) besides.push(`cure ${word} denies ${denies}`);
  const again = own.some((ailment) => ails.includes(ailment));
  return signsOfCures(`${upTo(2, words.size)}|${own.length > 0}|${again}|${denies}|head ${head}|read ${read}`);
}

const signsOfCures = remembered((seen): Together => {
  const [words, ailing, again, denies, head, read] = seen.split('|');
  const cured = words !== '0';
  const names = [
    `cures ${words} ${ailing}`,
    `cured ${cured} ${read}`,
    `cured ${cured} ${head} denies ${denies}`,
    `cured ${cured} ails ${again} denies ${denies}`,
    `ails ${again} denies ${denies} ${read}`,
  ];
  return { names, weights: null };
});
