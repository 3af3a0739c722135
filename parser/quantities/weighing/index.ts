import { columns, dot, type Weights } from '../../weights.ts';
import type { Draft } from '../draft.ts';
import type { Line } from '../line.ts';
import { isProportion } from '../proportions.ts';
import { unitAt } from '../unitAt.ts';
import { unitNamed } from '../units.ts';
import { ONES, TENS } from '../words.ts';
import { signsOf } from './signs.ts';
import { COUNTING } from './table.ts';

let known: Weights | undefined;

/** Laid out when a number is first weighed: it would hold up the start of what reads nothing yet. */
const shipped = (): Weights => {
  known ??= columns(COUNTING, ['counts']).counts;
  return known;
};

/** Below this nothing is read. Of phrases not learned from, one in 50 numbers that count falls below, and three in four that do not. */
const LEAST = -1;
/** A share has its percent: less speaks against it, and the waste of a take-off may hang on it. */
const LEAST_OF_SHARE = -2.2;

const NOTHING: ReadonlySet<Draft> = new Set();

/** A number alone in what was said answers a question: nothing stands beside it to be weighed. */
const MOST_ALONE = 2;

/** A number with no unit, said or shared: "three" in "three doors" and in "option three" alike. */
export const isBare = (draft: Draft) => draft.unit === null && draft.unitFrom === 'none';

/** What is weighed: a bare number, and a share, which talk has as often as work. A while may be what a day is told by. */
export const isWeighed = (draft: Draft) => isBare(draft) || draft.unit?.kind === 'percent';

/**
 * Bare numbers that, by their neighbours, neither count nor measure: "local three seventeen", "take the four oh one". They
 * are left out rather than guessed at. What a unit follows, or another number stands beside, is part of more and stays.
 */
export function countless(line: Line, drafts: readonly Draft[], claims: number): ReadonlySet<Draft> {
  const weighed = drafts.filter(isWeighed);
  if (weighed.length === 0) return NOTHING;
  const sums = weights(line, weighed, drafts.length, claims);
  const weak = new Set(
    drafts.filter(
      (draft, k) =>
        isWeighed(draft) &&
        draft.group?.kind !== 'pair' &&
        line.tokens.length - (draft.until - draft.from) > MOST_ALONE &&
        !isOfNamed(line, draft, drafts[k + 1]) &&
        !isMarked(line, draft) &&
        (sums.get(draft) ?? 0) < (isBare(draft) ? LEAST : LEAST_OF_SHARE),
    ),
  );
  keepWhole(line, drafts, weak);
  return weak;
}

/** Of the weight of the likeliest number near so much is added: who reads out one measure reads out several. */
const OF_NEAR = 0.3;
const NEAR = 30;

/** How likely each of some numbers counts or measures, by its own signs and by the others near it: over 0 for likely. */
function weights(line: Line, weighed: readonly Draft[], read: number, claims: number): ReadonlyMap<Draft, number> {
  const bare = weighed.filter(isBare).length;
  const said = { units: read - bare, claims, bare };
  const own = weighed.map((draft) => dot(shipped(), signsOf(line, draft, said)));
  return new Map(
    weighed.map((draft, k) => {
      let most = Number.NEGATIVE_INFINITY;
      for (const step of [-1, 1])
        for (let j = k + step; weighed[j] && Math.abs(weighed[j]!.from - draft.from) <= NEAR; j += step)
          most = Math.max(most, own[j]!);
      return [draft, own[k]! + (most === Number.NEGATIVE_INFINITY ? 0 : OF_NEAR * most)];
    }),
  );
}

/** "Four or seven", "a two eight": what is tied, or stands side by side, is left out together or not at all. */
function keepWhole(line: Line, drafts: readonly Draft[], weak: Set<Draft>): void {
  const tied = (a: Draft, b: Draft) => a.until === b.from || (a.group !== undefined && a.group.id === b.group?.id);
  for (let k = 0; k < drafts.length; ) {
    let end = k + 1;
    while (drafts[end] && tied(drafts[end - 1]!, drafts[end]!)) end++;
    const run = drafts.slice(k, end);
    if (isDoor(line, run) || !run.every((draft) => weak.has(draft))) for (const draft of run) weak.delete(draft);
    k = end;
  }
}

/** "The door's a two eight": its feet and inches. */
export const isDoor = (line: Line, [feet, inches, ...more]: readonly Draft[]) =>
  more.length === 0 && inches !== undefined && feet!.n < 5 && inches.n < 12 && line.word(feet!.from - 1) === 'a';

/** "Two fourteen twos": so many of what a rule has taken for a name. */
const isOfNamed = (line: Line, { until }: Draft, behind: Draft | undefined) =>
  /^(?:twos|threes)$/.test(line.word(until)) ||
  (behind?.from !== until && (ONES.has(line.word(until)) || TENS.has(line.word(until))));

const BOUNDED = /(?:hair|tad|smidge|touch) (?:over|under|past|shy)$/;

/** `3 - 10' sticks`, `12 - 2x6`: how many, a hyphen that stands apart, and the size of them. */
function isListed(line: Line, until: number): boolean {
  const [dash, figure] = [line.tokens[until], line.tokens[until + 1]];
  if (dash?.text !== '-' || !dash.spaced || !figure?.spaced || figure.kind !== 'number') return false;
  const size = line.number(until + 1);
  return (
    size !== null &&
    (/^(?:x|by)$/.test(line.word(size.until)) ||
      /^(?:length|weight|volume|current)$/.test(unitAt(line, size.until, size)?.unit.kind ?? ''))
  );
}

/** "In packs of 20", "minus eighteen", "ten or so", "three total": what stands beside it leaves no doubt. */
const isMarked = (line: Line, { from, until }: Draft): boolean =>
  /^(?:minus|plus|negative|qty|quantity|every)$/.test(line.word(from - 1)) ||
  // "Wind's seventeen gusting thirty".
  /^(?:wind|winds|temp|humidity|moisture|pressure|level)'s$/.test(line.word(from - 1)) ||
  line.word(until) === 'gusting' ||
  isListed(line, until) ||
  (line.word(until) === 'to' && line.word(until + 1) === 'one' && isProportion(line, from)) ||
  (line.word(from) === 'one' && line.word(from - 1) === 'to' && isProportion(line, from)) ||
  (line.word(until) === 'each' && line.word(until + 1) === 'way') ||
  /^(?:total|altogether)$/.test(line.word(until)) ||
  (line.word(until) === 'or' && line.word(until + 1) === 'so') ||
  BOUNDED.test(`${line.word(from - 2)} ${line.word(from - 1)}`) ||
  (line.word(from - 1) === 'of' && unitNamed(line.word(from - 2))?.kind === 'pack');
