import { tokenise } from '../hearing/tokens.ts';
import { ONES, TENS } from '../quantities/words.ts';
import type { Term, TermMention, Token } from '../types.ts';

export const isNumberedRoom = ({ name, kind }: Term) => kind === 'area' && NUMBER.test(name);

const NUMBER = /^(?:\d+[a-z]|\d{3,}|[a-z]\d+)$/i;

/** A room that goes by a number, as its words are told. */
interface Room {
  term: Term;
  pieces: readonly Token[];
}

/**
 * Rooms of the job that go by nothing but a number ("1A", "204"), wherever a note names one: what looks like one amp or
 * two hundred of something is then a place. "2bs tub" and "2B's tub" name it too, and so does "two b".
 *
 * @param areas the job's own names for its rooms; those with a word in them ("unit 3") are known by it
 */
export function numberedRooms(tokens: readonly Token[], text: string, areas: readonly string[]): TermMention[] {
  const rooms = areas.filter((name) => NUMBER.test(name)).map(roomOf);
  const out: TermMention[] = [];
  for (let i = 0; rooms.length && i < tokens.length; ) {
    const told = rooms
      .map(({ term, pieces }) => ({ term, until: isToldAt(tokens, i, pieces) ? i + pieces.length : i }))
      .reduce((best, one) => (one.until > best.until ? one : best));
    if (told.until > i) {
      const [start, end] = [tokens[i]!.start, tokens[told.until - 1]!.end];
      out.push({ term: told.term, from: i, until: told.until, start, end, quote: text.slice(start, end) });
    }
    i = Math.max(told.until, i + 1);
  }
  return out;
}

const roomOf = (name: string): Room => ({
  term: { name, kind: 'area' },
  pieces: tokenise(name),
});

const isToldAt = (tokens: readonly Token[], from: number, pieces: readonly Token[]): boolean =>
  pieces.every((piece, k) => {
    const token = tokens[from + k];
    if (!token || token.skip) return false;
    // "One a day", "3 a" is no room; "two b" can be nothing else.
    const apart = k > 0 && token.spaced && !piece.spaced;
    if (apart && piece.word === 'a') return false;
    const last = k === pieces.length - 1;
    return (
      token.word === piece.word ||
      (ONES.get(token.word) ?? TENS.get(token.word)) === Number(piece.word) ||
      (last && /^(?:'s|s)$/.test(token.word.slice(piece.word.length)) && token.word.startsWith(piece.word))
    );
  });
