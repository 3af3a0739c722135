import { unitNamed } from '../quantities/units.ts';
import type { Token, Vocabulary } from '../types.ts';
import { saidOf } from './company.ts';
import { everyday } from './everyday.ts';
import { isLetterOff } from './letters.ts';
import type { Candidate } from './nearest.ts';
import { isBesideTrade, isWord } from './ownWords.ts';
import { isTitled } from './titles.ts';
import { viewOf } from './views.ts';

/** They end or start no name that was misheard, unless dictation is known to write them so. */
const AT_NO_EDGE = /^(?:a|i|and|an|the|of|to|at|by|for|be|our|till|until|since|before|after|cause|cos|than|while)$/;
/** Behind a word of the trade these go on: "caulk in the gap", "the pad is". */
const GOES_ON = /^(?:in|on|is|are|it|or|up|out|re|eh)$/;
/** Counts above ten, and the words that only say how a length is counted. */
const COUNTED =
  /^(?:eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|lineal|linear)$/;
const COLOURS = /^(?:gr[ae]y|green|brown|black|white|yellow|orange|purple|pink)$/;
/** What stands before "grand" where it is money. */
const COUNTS =
  /^(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|half|couple|twenty|thirty|forty|fifty|hundred)$/;
/** Crews say it in so many notes (`companyOf`) that they mean it. */
const OFTEN = 3;

const PARTICLE = /^(?:up|out|down|off|back|in)$/;
/** Behind these stands a noun, and no verb: "the flap her", but "to show her". */
const BEFORE_NOUN =
  /^(?:a|an|the|this|that|new|old|each|every|another|bad|broken|cracked|loose|both|of|my|our|his|one|two|three|four|six)$/;
const BEFORE_VERB = /^(?:i|we|you|he|she|they|to|and|please|or|not|never)$|n't$/;
const BEHIND_VERB = /^(?:it|them|him|the|a|an|this|these|those|my|your|our|their|us|me|you)$/;
/** They stand before a thing of the trade and are meant. */
const DESCRIBING = new Set(
  'big long left right back hard high low old new dry wet hot cold good bad main half full best first last next front all one'.split(
    ' ',
  ),
);
const SUBJECT = /^(?:i|we|you|he|she|they|it|that)$/;
const A_SLIP = 0.3;
/** What costs less sounds the very same: "ballusters". */
const THE_SAME = 0.2;
/** What costs more is another word, where a hand typed it. */
const FAR_OFF = 0.55;

/** "GF see" was an abbreviation. */
const INITIALS = /^[b-df-hj-np-tv-xz]{2,5}$|^(?:gfci|gfi|afci|abs|osb|emt|uf)\b/;
const LARGE = /^\p{Lu}+$/u;

/** "E wall", "RO line", "PVC tee": written short by hand, amid small letters. */
function isTypedShort(tokens: readonly Token[], from: number, until: number): boolean {
  const own = tokens.slice(from, until).filter(({ text }) => LARGE.test(text));
  if (!own.length || own.length === until - from)
    return own.length === 1 && own[0]!.text.length > 1 && isSmallBeside(tokens, from, until);
  return true;
}

const isSmallBeside = (tokens: readonly Token[], from: number, until: number) =>
  [tokens[from - 1], tokens[until]].some((token) => /\p{Ll}/u.test(token?.text ?? ''));

/** Do the heard words mean what they say, whatever name they sound like? */
export function meansItself(
  { from, until, way, cost }: Candidate,
  meant: string,
  tokens: readonly Token[],
  vocabulary: Vocabulary,
): boolean {
  if (isTitled(tokens, from)) return true;
  const heard = tokens.slice(from, until).map(({ word }) => word);
  // A capital may be somebody's name, and a town's: only a slip in one word is put right there.
  const isLarge = /^\p{Lu}\p{Ll}/u.test(tokens[from]!.text);
  if (
    heard.length === 1 &&
    isLarge &&
    (cost > A_SLIP || way.listed || everyday(heard[0]!) || heard[0]![0] !== meant[0])
  )
    return true;
  const name = meant.split(/[ -]/);
  const isSlip = heard.length === 1 && name.length === 1 && isLetterOff(heard[0]!, name[0]!);
  // "Trace it tomorrow": what stands before an article or "it" was said as a verb.
  if (heard.length === 1 && !isSlip && everyday(heard[0]!) && BEHIND_VERB.test(tokens[until]?.word ?? '')) return true;
  // "Zinc", "coarse", "porcelain": the trade has the very word.
  if (heard.length === 1 && !everyday(heard[0]!) && vocabulary.has(heard[0]!)) return true;
  if (heard.some(isBesideTrade)) return true;
  // "Front doorway" is no front door.
  const isLonger = (word: string, own: string) =>
    own.length > 3 && word.length > own.length + 1 && word.startsWith(own);
  if (heard.some((word) => vocabulary.has(word) && name.some((own) => isLonger(word, own)))) return true;
  // "I found out the hard way".
  if (heard.join(' ') === 'hard way') return true;
  // "Squeeze some p v a in": one letter more was said.
  if (heard.every((word) => word.length === 1) && tokens[until]?.word.length === 1 && tokens[until]?.kind === 'word')
    return true;
  // "A tube of P L".
  if (heard.every((word) => word.length === 1) && !INITIALS.test(meant) && !way.listed) return true;
  const before = tokens[from - 1];
  if (heard.at(-1) === 'it' && BEFORE_VERB.test(before?.word ?? '')) return true;
  if (isAllOver(tokens, until)) return true;
  // "I want it at two before I bond anything" is no two by four.
  if (heard.at(-1) === 'before' && SUBJECT.test(tokens[until]?.word ?? '')) return true;
  if (way.listed && heard.join(' ').startsWith(way.listed)) return false;
  if (!INITIALS.test(meant) && isTypedShort(tokens, from, until)) return true;
  const wrong = heard.filter((word) => !name.includes(word));
  if (!wrong.length && heard.length === name.length) return true;
  // "Stall door hinge": a sentence begun large was typed, and only what sounds nearly the same is a slip.
  if (isLarge && cost > FAR_OFF && wrong.includes(heard[0]!)) return true;
  // "Epoxied", "midspan", "pullouts" are words of the trade's making.
  if (cost > THE_SAME && !isSlip && wrong.some((word) => isMadeOfKnown(word, vocabulary))) return true;
  // "Sixteen sacks" are no sixteens: a count said in full is heard right; so is a colour, "a grey board".
  if (wrong.some((word) => COUNTED.test(word) || COLOURS.test(word))) return true;
  // "2.5 cyds", "2 doz": behind figures a unit is a unit.
  if (heard.length === 1 && heard[0] === 'grand' && before && (before.kind === 'number' || COUNTS.test(before.word)))
    return true;
  if (heard.length === 1 && before?.kind === 'number' && isUnit(heard[0]!)) return true;
  // "The cover's off" is no misheard cover.
  if (wrong.some((word) => word.includes("'"))) return true;
  // "Level her out", "a big screen".
  if (heard.at(-1) === 'her') {
    const isNoun =
      before &&
      !BEFORE_VERB.test(before.word) &&
      (BEFORE_NOUN.test(before.word) || before.kind === 'number' || vocabulary.has(before.word));
    const isAside = PARTICLE.test(tokens[until]?.word ?? '') && !BEFORE_NOUN.test(before?.word ?? '');
    if (!isNoun || isAside) return true;
  }
  if (wrong.length < heard.length && wrong.some((word) => DESCRIBING.has(word))) return true;
  const letters = heard.filter((word) => word.length === 1).length;
  if (letters < 2 && (AT_NO_EDGE.test(heard[0]!) || AT_NO_EDGE.test(heard.at(-1)!))) return true;
  if (heard.length === 2 && goesOn(tokens, until) && vocabulary.has(heard[0]!) && saidOf(heard[0]!) > 0) return true;
  // "Brkt": written short, not misheard.
  if (wrong.some((word) => word.length > 1 && !/[aeiouy]/.test(word))) return true;
  // "The hall light": a room is a room.
  if (
    wrong.some(
      (word) =>
        saidOf(word) >= OFTEN && viewOf(tokens, from + heard.indexOf(word), vocabulary).found?.term.kind === 'area',
    )
  )
    return true;
  // "Tiled", "metering": another form of the very word.
  if (!isSlip && wrong.some((word) => name.some((own) => own.length > 2 && isFormOf(word, own))))
    return heard.length === name.length;
  return false;
}

/** "The drain re pitched", "tub spout o ring": what ends the words belongs to those behind. */
const goesOn = (tokens: readonly Token[], until: number) =>
  GOES_ON.test(tokens[until - 1]!.word) || (tokens[until - 1]!.word === 'o' && tokens[until]?.word === 'ring');

/** "White specks all over her couch", "lint all in the topcoat". */
const isAllOver = (tokens: readonly Token[], until: number) =>
  tokens[until - 1]!.word === 'all' && /^(?:over|in|through|down|along)$/.test(tokens[until]?.word ?? '');

const isUnit = (word: string) => unitNamed(word) !== null || /^(?:doz|dz)$/.test(word);

const isMadeOfKnown = (word: string, vocabulary: Vocabulary) =>
  word.length > 4 && !everyday(word) && !vocabulary.has(word) && isWord(word, vocabulary);

const ENDING = /^(?:s|es|e?d|ing|in|e?rs?|y|ly|able|less)$/;

/** One is the other with an ending. */
function isFormOf(word: string, own: string): boolean {
  if (!everyday(word)) return false;
  const stem = own.replace(/(?:e|y|ing|ed|er)$/, '');
  if (stem.length < 3 || !word.startsWith(stem)) return false;
  const rest = word.slice(stem.length);
  return rest === '' || ENDING.test(rest) || (rest[0] === stem.at(-1) && ENDING.test(rest.slice(1)));
}
