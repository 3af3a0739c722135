import { sameArea, stem, wordsOf } from '../../../../parser/trade/likeness.ts';
import type { Fact } from '../../../../parser/types.ts';
import { dot, hundredths, type Weights } from '../../../../parser/weights.ts';
import { isLive } from '../../live.ts';
import type { Entry } from '../../types.ts';
import { type Board, isWork, type Standing } from '../board.ts';
import { namesAnother, placesClash } from '../match.ts';
import { type Clause, clausesOf } from './clauses.ts';
import { cannotEnd } from './notEnded.ts';
import { roomsOf } from './rooms.ts';
import { goesBy, rankOf, type Shared, sharedOf } from './shared.ts';
import { signsOfEnding } from './signs.ts';
import { ENDINGS } from './table.ts';
import { readIn, type Telling } from './telling.ts';

/** A clause of a note that may tell of an item as finished. */
export interface Candidate {
  item: Standing;
  clause: Clause;
  /** What speaks for it, beside the signs of the clause itself. */
  signs: readonly string[];
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
  facts: readonly (Fact | null)[];
  /** Items that its facts have met. */
  met: readonly Standing[];
  /** The job's rooms. */
  areas: readonly string[];
}

/** Every clause of a note with each item of an earlier note that it may be about. */
export function candidatesOf({ board, entry, text, facts, met, areas }: Told): Candidate[] {
  const out: Candidate[] = [];
  const openWith = (word: string) => board.live.get(word)?.size ?? 0;
  const rooms = roomsOf(areas);
  for (const clause of clausesOf(text)) {
    const telling: Telling = { clause, entry, met, rooms, ...readIn(clause, facts) };
    const items = itemsNear(board, telling);
    if (!items.size) continue;
    const named = areas.find((area) => clause.said.includes(area.toLowerCase()));
    const room = named ?? facts.findLast((fact) => fact && fact.start < clause.end)?.area ?? null;
    const near: { item: Standing; shared: Shared }[] = [];
    for (const item of items) {
      if (item.history[0]!.entry === entry.id || !sameArea(room, item.area)) continue;
      const shared = sharedOf(telling, item, openWith);
      if (shared) near.push({ item, shared });
    }
    const all = near.map(({ shared }) => shared.weight);
    for (const { item, shared } of near)
      out.push({
        item,
        clause,
        signs: signsOfEnding(telling, item, shared, rankOf(shared.weight, all)),
        thin: shared.head === 'no' && shared.own + shared.named < 2,
      });
  }
  return out;
}

function itemsNear(board: Board, { clause, named }: Telling): Set<Standing> {
  const near = new Set<Standing>();
  const add = (words: ReadonlySet<string>, byHead: boolean) => {
    for (const word of words) {
      const filed = board.live.get(word);
      if (!filed || filed.size > COMMON) continue;
      for (const item of filed) if (item.head === word || !(byHead || isWork(word))) near.add(item);
    }
  };
  add(clause.words, false);
  add(named, false);
  add(clause.before, true);
  return near;
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
export type Endings = (note: Told) => Ending[];

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
  const best = new Map<Standing, Candidate & { weight: number }>();
  for (const candidate of candidatesOf(note)) {
    const { clause, signs } = candidate;
    const weight = saysPlainly(signs) ? PLAIN : dot(weights(), signs, weightOf(clause, weights()));
    if (weight > (best.get(candidate.item)?.weight ?? PERHAPS)) best.set(candidate.item, { ...candidate, weight });
  }
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
/** "No drips at the faucet": its own flaw, named with its thing, is gone. */
const saysPlainly = (signs: readonly string[]) => signs.includes('flaw said true') && signs.includes('head own');

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
