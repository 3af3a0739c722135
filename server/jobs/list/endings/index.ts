import { sameArea, stem, wordsOf } from '../../../../parser/trade/likeness.ts';
import { dot, hundredths, type Weights } from '../../../../parser/weights.ts';
import { isLive } from '../../live.ts';
import type { Entry } from '../../types.ts';
import { type Board, isWork, type Standing } from '../board.ts';
import { namesAnother, placesClash } from '../match.ts';
import type { Clause } from './clauses.ts';
import type { HeardClause } from './heard.ts';
import { cannotEnd } from './notEnded.ts';
import { goesBy, rankOf, type Shared, sharedOf } from './shared.ts';
import { type Signs, signsOfEnding, type Teller, weigh } from './signs.ts';
import { ENDINGS } from './table.ts';

/** A clause of a note that may tell of an item as finished. */
export interface Candidate {
  item: Standing;
  clause: Clause;
  signs: Signs;
  /** They share one word, which is not what the item is: "Lord it's hot" and a hot valve. */
  thin: boolean;
}

/** A word that more open items share tells nothing. */
const COMMON = 30;

/** A note whose facts have been met, and the list as it stands then. */
export interface Told {
  board: Board;
  entry: Entry;
  text: string;
  clauses: readonly HeardClause[];
  /** Items that its facts have met. */
  met: readonly Standing[];
}

/** Every clause of a note with each item of an earlier note that it may be about. */
export function candidatesOf({ board, entry, clauses, met }: Told): Candidate[] {
  const out: Candidate[] = [];
  let teller: Teller | null = null;
  for (const heard of clauses) {
    const near: { item: Standing; shared: Shared }[] = [];
    for (const item of itemsNear(board, heard)) {
      if (item.history[0]!.entry === entry.id || !sameArea(heard.room, item.area)) continue;
      const shared = sharedOf(heard, item, board);
      if (shared) near.push({ item, shared });
    }
    if (!near.length) continue;
    teller ??= { entry, at: Date.parse(entry.at), met };
    const all = near.map(({ shared }) => shared.weight);
    for (const { item, shared } of near)
      out.push({
        item,
        clause: heard.clause,
        signs: signsOfEnding(heard, teller, item, shared, rankOf(shared.weight, all)),
        thin: shared.head === 'no' && shared.own + shared.named < 2,
      });
  }
  return out;
}

/** Open items that go by a word of the clause; by a word of work, or of the clause before, only what is called so. */
function itemsNear(board: Board, { said, clause }: HeardClause): Set<Standing> {
  const near = new Set<Standing>();
  for (const word of said) addNear(near, board, word, isWork(word));
  for (const word of clause.before) addNear(near, board, word, true);
  return near;
}

function addNear(near: Set<Standing>, board: Board, word: string, byHead: boolean): void {
  const filed = board.live.get(word);
  if (!filed || filed.size > COMMON) return;
  for (const item of filed) if (!byHead || item.head === word) near.add(item);
}

/** What the history of an item calls it: weighed, not said outright, so that whoever reads it looks. */
export const TAKEN = 'taken as done';

/** An item that a note tells of as finished, and the words that say so. */
export interface Ending {
  item: Standing;
  /** False where it is as likely as not: asked about, and never closed by these words alone. */
  sure: boolean;
  start: number;
  end: number;
  quote: string;
}

/**
 * Log of odds over which words may tell of an item as finished: found by trying on fifty annotated jobs. Of what weighs
 * less than nothing and more than this three in four were.
 */
const PERHAPS = -0.5;

/** Says which items of earlier notes a note tells of as finished. */
export type Endings = (note: Told) => readonly Ending[];

const NONE: readonly Ending[] = [];

const weights = hundredths(ENDINGS);
const weighed = new WeakMap<Clause, number>();

/** What a clause weighs by itself, reckoned once however many items it may be about. */
function weightOf(clause: Clause, by: Weights): number {
  const known = weighed.get(clause) ?? dot(by, clause.signs);
  weighed.set(clause, known);
  return known;
}

/**
 * Items of earlier notes that this one tells of as finished, in whatever words: "swings free now", "the spring came and
 * it's on". Weighed by a table learned from annotated jobs; the list knows what was open.
 */
export const endingsIn: Endings = (note) => {
  const candidates = candidatesOf(note);
  if (!candidates.length) return NONE;
  const best = new Map<Standing, Candidate & { weight: number }>();
  for (const candidate of candidates) {
    const { item, clause, signs } = candidate;
    const weight = signs.plain ? PLAIN : weigh(signs, weights(), weightOf(clause, weights()));
    if (weight > (best.get(item)?.weight ?? PERHAPS)) best.set(item, { ...candidate, weight });
  }
  if (!best.size) return NONE;
  return [...best.values()]
    .filter(
      ({ item, clause, weight, thin }) =>
        isLive(item) &&
        (weight > 0 || !thin) &&
        !cannotEnd(clause) &&
        !isAnother(item, clause) &&
        !isOnlyPrepared(item, clause),
    )
    .map(({ item, weight, thin, clause: { whole: start, end } }) => ({
      item,
      sure: weight > 0 && !thin,
      start,
      end,
      quote: note.text.slice(start, end),
    }));
};

/** More than any clause weighs. */
const PLAIN = 100;

/** "Sunny side's all scraped": what peels is not painted yet. */
const isOnlyPrepared = ({ problem }: Standing, { said }: Clause): boolean =>
  problem !== null && PEELS.test(problem) && PREPARED.test(said) && !PAINTED.test(said);
const PEELS = /\b(?:peel|flak|bubbl|blister|chalk|alligator)/;
const PREPARED = /\b(?:scraped|sanded|primed|masked|stripped|prepped|washed|feathered|keyed)\b/;
const PAINTED = /\b(?:painted|top ?coat(?:ed)?|finish|two coats|second coat|recoated|done)\b/;

/** The words name a place or a thing that is not the item's: "shelf bracket" is no handrail bracket. */
function isAnother(item: Standing, { said, words, tokens }: Clause): boolean {
  const at = tokens.findIndex((token) => token.stem === item.head);
  return (
    placesClash({ words, area: null, quote: said }, item) ||
    isFlawElsewhere(item, words, said) ||
    (at > 0 && namesAnother(`${tokens[at - 1]!.word} ${tokens[at]!.word}`, item.head, item))
  );
}

/** "No leaks at the trap": the flaw of a faucet's drip, told of what is no faucet. */
function isFlawElsewhere(item: Standing, words: ReadonlySet<string>, said: string): boolean {
  if (item.problem === null) return false;
  const flaw = wordsOf(item.problem);
  if ([...words].some((word) => goesBy(item, word) && !flaw.has(word))) return false;
  const place = /\b(?:at|on|in|under|by|behind|from|around) (?:the|that|this) ([a-z]+)/.exec(said)?.[1];
  return place !== undefined && !goesBy(item, stem(place));
}
