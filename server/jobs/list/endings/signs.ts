import { remembered } from '../../../../parser/remembered.ts';
import { wordsOf } from '../../../../parser/trade/likeness.ts';
import type { Standing } from '../board.ts';
import { ailmentsOf } from './ailments.ts';
import type { Clause } from './clauses.ts';
import { GONE } from './manner.ts';
import { goesBy, type Rank, type Shared } from './shared.ts';
import type { Telling } from './telling.ts';

const MOST = 4;
const upTo = (most: number, n: number) => String(Math.min(most, n));

/** Signs that a clause tells of an item as finished, beside those of the clause itself. */
export function signsOfEnding(
  { clause, entry, read, met }: Telling,
  item: Standing,
  { own, rarest, before, named, head, part, strange }: Shared,
  rank: Rank,
): string[] {
  const sort = item.problem === null ? 'work' : 'flaw';
  const days = Math.round((Date.parse(entry.at) - Date.parse(item.history.at(-1)!.at)) / 86_400_000);
  const seen = [
    sort,
    read,
    head,
    upTo(3, own),
    upTo(MOST, rarest),
    upTo(2, before),
    upTo(2, named),
    rank,
    part,
    upTo(MOST, strange),
    met.includes(item),
    days < 1 ? 'none' : days < 3 ? 'few' : 'many',
    item.readyOn !== null && item.readyOn <= entry.at.slice(0, 10),
    item.state,
  ];
  const out = [...signsOfSeen(seen.join('|')), ...signsOfCure(clause, item, `head ${head}`, `read ${read}`)];
  if (item.problem !== null && [...wordsOf(item.problem)].some((word) => clause.words.has(word)))
    out.push(`flaw said ${clause.signs.includes(GONE)}`);
  const { tokens } = clause;
  const others = new Set<string>();
  tokens.forEach(({ word, stem }, i) => {
    if (!goesBy(item, stem)) others.add(word);
    if (stem !== item.head) return;
    const next = tokens[i + 1]?.word ?? '-';
    out.push(`after ${next}`, `after ${next} ${tokens[i + 2]?.word ?? '-'}`, `ahead ${tokens[i - 1]?.word ?? '-'}`);
  });
  for (const word of others) out.push(`word ${word}`);
  return out;
}

/** Signs put in words from what was seen, each of few values: the same come again and again, and are put in words once. */
const signsOfSeen = remembered((seen): readonly string[] => {
  const [sort, read, head, own, rarest, before, named, rank, part, strange, met, days, due, state] = seen.split('|');
  return [
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
});

/** Whether what ails the item is told as gone: "drips", and "bone dry under there now". */
function signsOfCure(
  { ails, cures, denies }: Clause,
  { problem, history }: Standing,
  head: string,
  read: string,
): string[] {
  if (problem === null) return [];
  const own = ailmentsOf(`${problem} ${history[0]!.words ?? ''}`);
  const words = new Set(own.flatMap((ailment) => cures[ailment]!));
  const cured = words.size > 0;
  const again = own.some((ailment) => ails.includes(ailment));
  return [
    `cures ${Math.min(2, words.size)} ${own.length > 0}`,
    `cured ${cured} ${read}`,
    `cured ${cured} ${head} denies ${denies}`,
    `cured ${cured} ails ${again} denies ${denies}`,
    `ails ${again} denies ${denies} ${read}`,
    ...[...words].map((word) => `cure ${word} denies ${denies}`),
  ];
}
