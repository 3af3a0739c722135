import type { Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { viewOf } from './views.ts';
import type { Candidate } from './stretches.ts';

/** They end or start no name that was misheard, unless dictation is known to write them so. */
const AT_NO_EDGE = /^(?:a|i|and|an|the|of|to|at|by|for|be|our)$/;
/** Behind a word of the trade these go on: "caulk in the gap", "the pad is". */
const GOES_ON = /^(?:in|on|is|are|it|or|all|went|up|out)$/;

const PARTICLE = /^(?:up|out|down|off|back|in)$/;
/** They stand before a thing of the trade and are meant. */
const DESCRIBING = new Set(
  'big long left right back hard high low old new dry wet hot cold good bad main whole half full best first last next front all one'.split(' '),
);
const A_SLIP = 0.3;

/** Do the heard words mean what they say, whatever name they sound like? */
export function meansItself(
  { from, until, way, cost }: Candidate,
  meant: string,
  tokens: readonly Token[],
  vocabulary: Vocabulary,
): boolean {
  const heard = tokens.slice(from, until).map(({ word }) => word);
  if (way.listed && heard.join(' ').startsWith(way.listed)) return false;
  const name = meant.split(/[ -]/);
  const wrong = heard.filter((word) => !name.includes(word));
  if (!wrong.length && heard.length === name.length) return true;
  // "The cover's off" is no misheard cover.
  if (wrong.some((word) => word.includes("'"))) return true;
  // "Level her out", "a big screen".
  if (heard.at(-1) === 'her' && PARTICLE.test(tokens[until]?.word ?? '')) return true;
  if (wrong.length < heard.length && wrong.some((word) => DESCRIBING.has(word))) return true;
  // A capital may be somebody's name, and a town's.
  const isLarge = /^\p{Lu}\p{Ll}/u.test(tokens[from]!.text);
  if (heard.length === 1 && isLarge && (cost > A_SLIP || everyday(heard[0]!))) return true;
  const letters = heard.filter((word) => word.length === 1).length;
  if (letters < 2 && (AT_NO_EDGE.test(heard[0]!) || AT_NO_EDGE.test(heard.at(-1)!))) return true;
  if (heard.length > 1 && GOES_ON.test(heard.at(-1)!) && heard.slice(0, -1).every((word) => vocabulary.has(word))) return true;
  // "Brkt": written short, not misheard.
  if (wrong.some((word) => word.length > 1 && !/[aeiouy]/.test(word))) return true;
  // "The hall light": a room is a room.
  if (wrong.some((word) => viewOf(tokens, from + heard.indexOf(word), vocabulary).found?.term.kind === 'area')) return true;
  // "Tiled", "metering": another form of the very word.
  if (wrong.some((word) => name.some((own) => own.length > 2 && isFormOf(word, own)))) return heard.length === name.length;
  return false;
}

const ENDING = /^(?:s|es|e?d|ing|in|e?rs?|y|ly|able|less)$/;

/** One is the other with an ending. */
function isFormOf(word: string, own: string): boolean {
  if (!everyday(word) && word.length > own.length + 3) return false;
  const stem = own.replace(/(?:e|y|ing|ed|er)$/, '');
  if (stem.length < 3 || !word.startsWith(stem)) return false;
  const rest = word.slice(stem.length);
  return rest === '' || ENDING.test(rest) || (rest[0] === stem.at(-1) && ENDING.test(rest.slice(1)));
}
