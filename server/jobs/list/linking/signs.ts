/** What speaks for and against: that words told are of an item that stands, of a new one, or of none. */
import { wordsOf } from '../../../../parser/trade/likeness.ts';
import { lowered } from '../../../../parser/trade/words.ts';
import type { Done, FollowUp, Problem } from '../../../../parser/types.ts';
import { isLive } from '../../live.ts';
import { BEFORE, ENDS, PUTS, verbOf } from '../../said/verbs.ts';
import { isWork, type Standing } from '../board.ts';
import { headIn } from '../match.ts';
import type { Setting } from '../setting.ts';

export type Told = Problem | FollowUp | Done;

/** A fact as it is compared with items: what it names, and how. */
export interface Naming {
  fact: Told;
  /** `flaw`, `fixed`, `plan`, `done`. */
  sort: string;
  /** Of its name. */
  words: ReadonlySet<string>;
  /** Of its name and of its words as said. */
  said: ReadonlySet<string>;
  head: string;
  /** Its verb; empty for a flaw. */
  verb: string;
  /** It only points at what it is about: "that's fixed", "swap it out". */
  points: boolean;
}

const POINTS = /\b(?:it|its|it's|that|that's|them|those|they|they're|one|ones|both|this|these)\b/;

const sortOf = (fact: Told) =>
  fact.kind === 'problem' ? (fact.state === 'fixed' ? 'fixed' : 'flaw') : fact.kind === 'followUp' ? 'plan' : 'done';

export function namingOf(fact: Told): Naming {
  const name = fact.kind === 'problem' ? `${fact.thing} ${fact.defect}` : fact.task;
  const thing = fact.kind === 'problem' ? fact.thing : fact.task.split(' ').slice(1).join(' ') || fact.task;
  const words = wordsOf(name);
  return {
    fact,
    sort: sortOf(fact),
    words,
    said: new Set([...words, ...wordsOf(fact.quote)]),
    head: headIn(thing, fact.quote, fact.area),
    verb: fact.kind === 'problem' ? '' : verbOf(fact.task),
    points: POINTS.test(fact.quote.toLowerCase()),
  };
}

const SHARES = ['none', 'some', 'half', 'most', 'all'];
const share = (part: number, whole: number): string => {
  if (!whole || !part) return SHARES[0]!;
  const s = part / whole;
  return s >= 1 ? SHARES[4]! : s >= 0.67 ? SHARES[3]! : s >= 0.4 ? SHARES[2]! : SHARES[1]!;
};

/** How long ago an item was last spoken of, in the note itself by what stands between. */
function since(setting: Setting, item: Standing): string {
  const last = item.history.at(-1)!;
  if (last.entry === setting.entry.id || setting.met.includes(item)) {
    const place = setting.met.lastIndexOf(item);
    return place === setting.met.length - 1 ? (NEXT.test(setting.lead) ? 'next' : 'last') : 'note';
  }
  const days = Math.round((Date.parse(setting.entry.at) - Date.parse(last.at)) / 86_400_000);
  return days < 1 ? 'day' : days < 2 ? 'yesterday' : days < 4 ? 'days' : days < 8 ? 'week' : 'long';
}
const NEXT = /^[\s,]*(?:(?:and|so|but|then|which|also)[\s,]*)*$/;

const itemSort = (item: Standing) => `${item.problem === null ? 'work' : 'flaw'}${isLive(item) ? '' : ' closed'}`;

const count = (n: number) => (n > 3 ? '4' : String(n));

/** Signs that a fact is told of an item. */
export function signsOfItem(setting: Setting, naming: Naming, item: Standing): string[] {
  const { fact, sort, words, said, head, verb, points } = naming;
  const both = `${sort} ${itemSort(item)}`;
  let named = 0;
  let known = 0;
  let things = 0;
  for (const word of words) {
    const mine = item.words.has(word);
    if (mine) named++;
    if (mine || item.told.has(word)) {
      known++;
      if (!isWork(word)) things++;
    }
  }
  let its = 0;
  for (const word of item.words) if (said.has(word)) its++;
  const when = since(setting, item);
  const owed = verbOf(item.task);
  const flaw = item.problem === null ? null : [...wordsOf(item.problem)].some((word) => said.has(word));
  const heads =
    head === item.head
      ? 'same'
      : words.has(item.head)
        ? 'in'
        : item.words.has(head) || item.told.has(head)
          ? 'its'
          : 'other';
  const work =
    verb === ''
      ? 'none'
      : verb === owed
        ? 'same'
        : ENDS.has(verb)
          ? 'ends'
          : PUTS.has(verb) && PUTS.has(owed)
            ? 'alike'
            : BEFORE.has(verb)
              ? 'before'
              : 'other';
  const room = fact.area && item.area ? 'same' : 'unsaid';
  const out = [
    `pair ${both}`,
    `named ${share(named, words.size)} ${both}`,
    `known ${share(known, words.size)}`,
    `its ${share(its, item.words.size)}`,
    `its ${share(its, item.words.size)} ${both}`,
    `things ${count(things)}`,
    `things ${count(things)} ${when}`,
    `head ${heads}`,
    `head ${heads} ${both}`,
    `head ${heads} ${when}`,
    `work ${work} ${both}`,
    `work ${work} head ${heads}`,
    `room ${room}`,
    `room ${room} head ${heads}`,
    `when ${when}`,
    `when ${when} ${both}`,
  ];
  if (flaw !== null) out.push(`flaw ${flaw} ${sort}`, `flaw ${flaw} head ${heads}`);
  if (points) out.push(`points ${when} ${both}`, `points ${when} things ${count(things)}`);
  else out.push(`no point ${when}`);
  if (item.readyOn !== null && item.readyOn <= setting.entry.at.slice(0, 10)) out.push(`due now ${sort} head ${heads}`);
  return out;
}

const wordsIn = (text: string): string[] => lowered(text).match(/[a-z][a-z']*/g) ?? [];

/** Signs that a fact opens an item. */
export function signsOfNew({ sort, points, words }: Naming): string[] {
  return [`new ${sort}`, `new points ${points}`, `new size ${count(words.size)}`];
}

/** Signs that a fact is no item at all: seen, explained, arranged, or somebody else's. */
export function signsOfNone({ fact, sort, points }: Naming, { entry, tail, lead }: Setting): string[] {
  const said = wordsIn(fact.quote);
  return [
    'none',
    `none ${sort}`,
    `none ${sort} weighed`,
    `none size ${said.length > 12 ? 'long' : said.length > 6 ? 'middle' : said.length > 3 ? 'short' : 'scrap'}`,
    `none points ${points}`,
    `none first ${said[0] ?? ''}`,
    ...[...new Set(said)].map((word) => `none word ${word}`),
    ...new Set(
      wordsIn(tail)
        .slice(0, 8)
        .map((word) => `none after ${word}`),
    ),
    ...new Set(
      wordsIn(lead)
        .slice(-5)
        .map((word) => `none before ${word}`),
    ),
    ...(fact.kind === 'followUp'
      ? [
          `none verb ${fact.task.split(' ')[0]}`,
          `none who ${fact.who ? 'other' : 'us'}`,
          `none day ${fact.due ? (fact.due > entry.at.slice(0, 10) ? 'later' : 'now') : 'no'}`,
        ]
      : []),
  ];
}
