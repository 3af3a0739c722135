import { wordsOf } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import { isLive } from '../live.ts';
import { NUMBERS, numbersIn } from '../said/listNumbers.ts';
import type { Entry } from '../types.ts';
import { type Board, type Standing, underNumber } from './board.ts';
import { setState } from './items.ts';
import { find } from './match.ts';

const PEOPLE = '(?:owners?|customers?|clients?|homeowners?|she|he|they|both|inspector|designer|architect|[a-z]+)';
const WHAT = '([^.;!?\\n]+)';
const SAYS: readonly RegExp[] = [
  /\b((?:all|everything)(?:'s| is| of it| got|'s all)? )signed off\b([^.;!?\n]*)/,
  new RegExp(`\\b(?:signed off|signs off|sign off|signing off)(?: on| for)? ${WHAT}`),
  new RegExp(`\\b(?:approved|accepted|okayed|ok'd|passed) (?=(?:${NUMBERS}|all|every|the whole|the )\\b)${WHAT}`),
  new RegExp(
    `\\b${PEOPLE}(?:'s|'re| is| are| was| were) (?:all |really |very |totally |super )?(?:happy|good|fine|okay|ok|satisfied|pleased|thrilled) with ${WHAT}`,
  ),
];
/** Not yet, or only wished for. */
const NOT_YET =
  /\b(?:not|n't|never|won't|until|till|before|once|if|when|unless|need|needs|want|wants|gonna|going to|will|has to|have to|gotta|waiting|hopefully|should|almost|supposed)\b|n't\b/;
const ALL =
  /^(?:all|everything|every one|the (?:whole|entire)|the lot|the rest|it all|all of)\b|^(?:the )?(?:work|job|house|list)$/;
const BUT = /\b(?:except|but|besides|other than|all but|apart from|minus)(?: for)?(?: not)? (.+)$/;

/** Work told as accepted, in words. */
export interface Signed {
  what: string;
  but: string | null;
  quote: string;
}

/** Clauses that tell of work accepted at the walk-through. */
export function signedIn(text: string): Signed[] {
  const out: Signed[] = [];
  for (const quote of text.split(/[.;!?\n]/)) {
    const said = lowered(quote);
    for (const says of SAYS) {
      const match = says.exec(said);
      if (!match || NOT_YET.test(said.slice(0, match.index + match[0].length - match.at(-1)!.length))) continue;
      const [, first, rest] = match;
      const whole = `${first}${rest ?? ''}`.trim();
      const but = BUT.exec(whole)?.[1] ?? null;
      const what = whole
        .replace(BUT, '')
        .split(/,? (?:so|because|cause|though|just)\b|, (?!(?:and )?\d)/)[0]!
        .trim();
      out.push({ what, but, quote: quote.trim() });
      break;
    }
  }
  return out;
}

/**
 * "She signed off on four and six", "owner's happy with the laundry": done work is accepted; by its number, open work
 * too. What was excepted stays as it is.
 */
export function signOff(board: Board, entry: Entry, signed: readonly Signed[], areas: readonly string[]): void {
  for (const { what, but, quote } of signed) {
    const left = new Set(but === null ? [] : meantBy(board, but, areas));
    for (const item of meantBy(board, what, areas))
      if (!left.has(item) && item.state !== 'dropped') setState(board, item, entry, 'signed off', quote);
  }
}

/** Items by number; else those done, all of them, of a room, or the one that the words name. */
function meantBy(board: Board, words: string, areas: readonly string[]): Standing[] {
  const numbers = numbersIn(words.replace(/[,.]? *(?:too|already|today)$/, ''));
  if (numbers.length) return numbers.flatMap((number) => underNumber(board, number) ?? []);
  const done = board.items.filter((item) => item.state === 'done' || item.state === 'signed off');
  if (ALL.test(words)) return done;
  const rooms = areas.filter((area) => words.includes(area.toLowerCase()) || isRoom(words, area));
  const named = wordsOf(words);
  const ofRoom = new Set(rooms.flatMap((room) => [...wordsOf(room)]));
  if (rooms.length && [...named].every((word) => ofRoom.has(word)))
    return done.filter((item) => item.area !== null && rooms.includes(item.area));
  const match = find(
    board,
    { words: named, area: rooms[0] ?? null, quote: words },
    { where: ['closed', 'live'], sure: 0.6, anyOf: false, fits: (item) => !isLive(item) },
  );
  return match?.sure ? [match.item] : [];
}

/** "The laundry" is the laundry room. */
const isRoom = (words: string, area: string): boolean => {
  const said = wordsOf(words);
  return said.size > 0 && [...said].every((word) => wordsOf(area).has(word));
};
