import { shownOf } from '../../../parser/shown.ts';
import { wordsOf } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import { event } from '../event.ts';
import type { Question } from '../ledger.ts';
import { isLive } from '../live.ts';
import { ITEMS, numbersIn } from '../said/listNumbers.ts';
import type { Entry } from '../types.ts';
import { type Board, type Standing, underNumber } from './board.ts';
import { find } from './match.ts';

const WHO = '(?:the )?([a-z]+)';
const DOES =
  "(?:can|could|will|'ll|should|gets?(?: to)?|takes?|'s taking|is taking|'s doing|is doing|'s handling|is handling|(?:'s|is) (?:gonna|going to))(?: (?:take|do|handle|get|have|finish|knock out|tackle|take care of))?";

const END = '(?= (?:today|tomorrow|tonight|next|this|on|so|while|when|if|for|and|now)\\b|,|$)';

/** Ways to say who does it, what is done in `what`, by whom in `who`. */
const GIVES: readonly { says: RegExp; who: number; what: number }[] = [
  {
    says: new RegExp(`\\b(?:give|hand|assign|pass|leave|send|turn)s? (${ITEMS}) (?:over |off )?(?:to|for|with) ${WHO}`),
    who: 2,
    what: 1,
  },
  {
    says: new RegExp(
      `\\b(?:have|let|get) ${WHO} (?:to )?(?:do|take|handle|finish|tackle|knock out|take care of|get) (${ITEMS})${END}`,
    ),
    who: 1,
    what: 2,
  },
  { says: new RegExp(`\\bput ${WHO} on (${ITEMS})${END}`), who: 1, what: 2 },
  { says: new RegExp(`^${WHO} ?${DOES} (${ITEMS})${END}`), who: 1, what: 2 },
  { says: new RegExp(`^(${ITEMS}) (?:is|are|goes|go) (?:to|for|with) ${WHO}$`), who: 2, what: 1 },
  { says: new RegExp(`^(${ITEMS}) (?:is|are) ([a-z]+)'s(?: now)?$`), who: 2, what: 1 },
];
const TRADES =
  /^(?:plumber|electrician|painter|roofer|mason|tiler|framer|carpenter|drywaller|helper|apprentice|sub|laborer)$/;
const NOBODY =
  /^(?:me|him|her|them|us|you|it|they|he|she|we|i|that|this|who|someone|somebody|nobody|owner|customer|yard|store|shop|dump|dry|set|cure|go|see|check|do|now|later|tomorrow|today|one|us)$/;

/** Work told as given to somebody, in words. */
export interface Handed {
  /** As it was said. */
  who: string;
  what: string;
  quote: string;
}

/** Clauses that give work to somebody. */
export function handedIn(text: string): Handed[] {
  const out: Handed[] = [];
  for (const clause of text.split(/[.;!?\n]|, (?=[A-Za-z]+(?:'s| is| can| will)\b)|,? and (?=[A-Z])/)) {
    const quote = clause.trim().replace(/^(?:and|so|ok|okay|also|then|oh)[, ]+/i, '');
    const said = lowered(quote);
    for (const { says, who, what } of GIVES) {
      const match = says.exec(said);
      const name = match?.[who];
      if (!match || !name || NOBODY.test(name)) continue;
      const at = said.indexOf(name, match.index);
      out.push({ who: quote.slice(at, at + name.length), what: match[what]!, quote });
      break;
    }
  }
  return out;
}

/** "Give number four to Luis", "Luis can take the shutoff": items of the list get their person. */
export function handOver(
  { board, entry, noteId, questions }: { board: Board; entry: Entry; noteId: string; questions: Question[] },
  handed: readonly Handed[],
  crew: readonly string[],
): void {
  for (const { who, what, quote } of handed) {
    const numbers = numbersIn(what);
    const person = personOf(who, crew, board, numbers.length > 0);
    if (!person) continue;
    const give = (item: Standing) => {
      if (item.who === person) return;
      item.who = person;
      item.history.push(event(entry, `given to ${person}`, quote));
    };
    for (const number of numbers) {
      const item = underNumber(board, number);
      if (item && isLive(item)) give(item);
    }
    if (numbers.length) continue;
    const match = find(board, { words: wordsOf(what), area: null, quote: what }, { sure: 0.6, anyOf: false });
    if (match?.sure) give(match.item);
    else if (match)
      questions.push({
        noteId,
        ask: `Is no. ${match.item.number} (${shownOf(match.item)}) for ${person}? Say "give number ${match.item.number} to ${person}".`,
        item: match.item,
        whileOpen: true,
      });
  }
}

/** Somebody who can be given work: of the crew, known from the list, a trade, or a name as it is written. */
function personOf(said: string, crew: readonly string[], board: Board, sure: boolean): string | null {
  const name = said.toLowerCase();
  const known =
    crew.find((one) => one.toLowerCase() === name || one.toLowerCase().split(' ')[0] === name) ??
    board.items.find((item) => item.who?.toLowerCase() === name)?.who;
  if (known) return known;
  if (TRADES.test(name)) return name;
  if (/^[A-Z]/.test(said) || sure) return said[0]!.toUpperCase() + said.slice(1);
  return null;
}
