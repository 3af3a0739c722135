import type { Draft } from './draft.ts';
import { INCH } from './feet.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { unitNamed } from './units.ts';
import { wordSet } from './words.ts';

const DEGREE = unitNamed('deg')!;
const SHARE_OF_WORK = wordSet('done full finished empty way open closed of the through complete bath baths');

/** A part with no unit is a tape reading in inches: common practice, no source. A share of something is not. */
export function onTape(line: Line, draft: Draft, number: SaidNumber): Draft | null {
  const next = line.word(draft.until);
  if (number.shape === 'mixed') {
    const counts = next === 'of' || next === 'more' || next === 'left' || number.d === 3 || number.d === 5;
    if (!counts && number.n < 90 * number.d && isAngle(line, draft.from))
      return { ...draft, unit: DEGREE, unitFrom: 'implied' };
    return counts ? draft : { ...draft, unit: INCH, unitFrom: 'implied' };
  }
  // "Five eighths of plywood", "a sixteenth of daylight": nobody shares by eighths.
  const sloped = next === 'the' && line.word(draft.until + 1) === 'foot';
  const shared = SHARE_OF_WORK.has(next) && !sloped && (number.d < 8 || number.d === 10);
  if (number.d === 3 || number.d === 5 || shared) return null;
  if (number.d === 2 && number.inWords && !isTapeHalf(line, draft)) return null;
  return { ...draft, unit: INCH, unitFrom: 'implied' };
}

/** "Miter it at twenty two and a half". */
const isAngle = (line: Line, from: number) =>
  line.word(from - 1) === 'at' &&
  [2, 3].some((back) => /^(?:mitre|miter|bevel|mitred|mitered|beveled)$/.test(line.word(from - back)));

/** "Shave a half off", "a fat half": a tape's half; "half the crew", "half decent" count nothing. */
function isTapeHalf(line: Line, draft: Draft): boolean {
  const before = line.word(draft.from - 1);
  // "Three quarter by half reducer".
  if (before === 'by' && /^(?:half|quarters?|eighths?|sixteenths?|inch|inches)$/.test(line.word(draft.from - 2)))
    return true;
  // "Ten sheets of half".
  if (before === 'of' && endsPhrase(line, draft.until) && !/^(?:of|the)$/.test(line.word(draft.until))) return true;
  return /^(?:a|one|an)$/.test(line.word(draft.from))
    ? endsPhrase(line, draft.until)
    : /^(?:strong|fat|full|heavy|light|scant|shy)$/.test(before) ||
        /^(?:by|strong|shy|heavy|scant)$/.test(line.word(draft.until));
}
