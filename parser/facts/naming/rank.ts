import { dot } from '../../weights.ts';
import { agreedName, mostAgreed } from '../agreed.ts';
import { phrase, type Talk } from '../talk.ts';
import { type Candidate, candidatesIn } from './candidates.ts';
import { joinSigns, type Place, signsOf } from './features.ts';
import { shipped } from './weights.ts';

/** A name for a place: one phrase, or a part with the whole that it belongs to ("niche", "shelf"). */
export interface Name {
  part: Candidate;
  whole: Candidate | null;
}

/** A name that is possible at a place, with the signs that speak for and against it. */
export interface Possible extends Name {
  signs: string[];
}

/** How many clauses back a name is looked for; and, but for what points, one clause on. */
const BACK = 5;

/** Flatter than this, names of goods told after a figure outvote its own. */
const FLATTER = 0.8;

/** Every name that is possible at a place: each noun phrase around it alone, and each two of them joined. */
export function possibleNames(talk: Talk, place: Place): Possible[] {
  const single = around(talk, place).map(({ candidate, rank }) => ({
    candidate,
    signs: signsOf(talk, place, candidate, rank),
  }));
  return single.flatMap(({ candidate: part, signs }) => [
    { part, whole: null, signs },
    ...single
      .filter((other) => other.candidate !== part && (place.use !== 'flaw' || other.candidate.at === part.at))
      .map(({ candidate: whole, signs: its }) => ({
        part,
        whole,
        signs: [...signs, ...joinSigns(talk, part, whole), ...its.map((s) => `whole ${s}`)],
      })),
  ]);
}

/** The name for a place that agrees best with all that are likely, or null where nothing near it has one. */
export const nameAt = (talk: Talk, place: Place): Name | null => mostAgreed(weighed(talk, place), '', FLATTER);

/** The same with its words, which say another thing besides where that is about as likely. */
export const namedAt = (talk: Talk, place: Place): { name: Name; words: string } | null =>
  agreedName(weighed(talk, place), '', FLATTER);

function weighed(talk: Talk, place: Place) {
  const weights = shipped()[place.use];
  return possibleNames(talk, place).map((name) => ({
    ...name,
    lead: '',
    words: wordsOfName(name),
    weight: dot(weights, name.signs),
  }));
}

/** A name's words as the list writes them, the whole before its part, no word twice. */
export function wordsOfName({ part, whole }: Name): string {
  const own = phrase(part.chunks);
  const before = whole ? phrase(whole.chunks) : '';
  const said = new Set(own.split(' '));
  return [...before.split(' ').filter((w) => w && !said.has(w)), own].filter(Boolean).join(' ');
}

/** The noun phrases around a place with their rank, the nearest first on each side. */
function around(talk: Talk, place: Place): { candidate: Candidate; rank: number }[] {
  const points = place.use === 'pointer';
  const last = Math.min(points ? place.at : place.at + 1, talk.frames.length - 1);
  const all: Candidate[] = [];
  for (let at = Math.max(0, place.at - BACK); at <= last; at++) all.push(...candidatesIn(talk, at));
  const isBefore = (c: Candidate) => c.at < place.at || (c.at === place.at && c.until <= place.k);
  const before = all.filter(isBefore).reverse();
  const after = points ? [] : all.filter((c) => !isBefore(c));
  return [before, after].flatMap((side) => side.map((candidate, rank) => ({ candidate, rank })));
}
