import { remembered } from '../../../../parser/remembered.ts';
import { wordsOf } from '../../../../parser/trade/likeness.ts';
import type { Weights } from '../../../../parser/weights.ts';
import type { Entry } from '../../types.ts';
import type { Standing } from '../board.ts';
import { ailmentsOf } from './ailments.ts';
import type { Clause } from './clauses.ts';
import type { HeardClause } from './heard.ts';
import { goesBy, type Rank, type Shared } from './shared.ts';

/** Signs that come together, again and again: put in words once, and weighed once. */
interface Together {
  names: readonly string[];
  /** Those that weigh anything, in their order; null until they are asked for. */
  weights: readonly number[] | null;
}

/** What speaks for a clause telling of an item as finished, beside the signs of the clause itself. */
export interface Signs {
  together: readonly Together[];
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
  const together = [signsOfSeen(seen)];
  if (item.problem !== null) takeCure(together, clause, item, head, read);
  const flawSaid = item.problem !== null && sharesWord(wordsOf(item.problem), clause.words);
  if (flawSaid) together.push(clause.gone ? FLAW_GONE : FLAW_SAID);
  const { tokens, distinct } = clause;
  for (let i = 0; i < tokens.length; i++) {
    if (tokens[i]!.stem !== item.head) continue;
    const [ahead, next, after] = [wordAt(clause, i - 1), wordAt(clause, i + 1), wordAt(clause, i + 2)];
    together.push(signsOfPlace(`${ahead}|${next}|${after}`));
  }
  for (const { word, stem } of distinct) if (!goesBy(item, stem)) together.push(signOfWord(word));
  return { together, plain: flawSaid && clause.gone && head === 'own' };
}

const wordAt = ({ tokens }: Clause, i: number): string => tokens[i]?.word ?? '-';

const alone = (name: string): Together => ({ names: [name], weights: null });
const FLAW_GONE = alone('flaw said true');
const FLAW_SAID = alone('flaw said false');
const signOfWord = remembered((word) => alone(`word ${word}`));
const signOfCure = remembered((word) => alone(`cure ${word} denies false`));
const signOfCureDenied = remembered((word) => alone(`cure ${word} denies true`));
/** What stands around the word that says what the item is. */
const signsOfPlace = remembered((seen): Together => {
  const [ahead, next, after] = seen.split('|');
  return { names: [`after ${next}`, `after ${next} ${after}`, `ahead ${ahead}`], weights: null };
});

function sharesWord(some: ReadonlySet<string>, others: ReadonlySet<string>): boolean {
  for (const word of some) if (others.has(word)) return true;
  return false;
}

/** Every sign by its name. */
export const namesOf = ({ together }: Signs): string[] => together.flatMap(({ names }) => names);

/** What the signs weigh, on top of what the clause weighs by itself. */
export function weigh({ together }: Signs, by: Weights, clause: number): number {
  let sum = clause;
  for (const signs of together) {
    signs.weights ??= signs.names.map((name) => by.get(name) ?? 0).filter((weight) => weight !== 0);
    for (const weight of signs.weights) sum += weight;
  }
  return sum;
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

/** Whether what ails the item is told as gone: "drips", and "bone dry under there now"; and each word of cure. */
function takeCure(
  together: Together[],
  { ails, cures, denies }: Clause,
  { problem, history }: Standing,
  head: string,
  read: string,
): void {
  const own = ailmentsOf(`${problem} ${history[0]!.words ?? ''}`);
  const words = new Set<string>();
  for (const ailment of own) for (const word of cures[ailment]!) words.add(word);
  const again = own.some((ailment) => ails.includes(ailment));
  together.push(signsOfCures(`${upTo(2, words.size)}|${own.length > 0}|${again}|${denies}|head ${head}|read ${read}`));
  const signOf = denies ? signOfCureDenied : signOfCure;
  for (const word of words) together.push(signOf(word));
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
