import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';

const claim = (until: number): Claim => ({ until, kind: 'address' });

const STREETS = wordSet(
  'gardens grove mews row walk square rise hill parade esplanade circuit street st avenue ave road rd lane ln drive dr court ct place pl way boulevard blvd terrace close crescent highway',
);

/** Words that stand between sizes and goods. */
const BETWEEN_SIZES = wordSet(
  'by x × wide high tall deep long thick and or to of is are at more above below over under off from behind along beside near past inside outside each per',
);

/** House numbers: "418 Larch Street", "1440 NE Poplar Ave", "at 418 Larch". */
export const address: ClaimRule = (line, i) => {
  const spoken = line.number(i);
  if (spoken?.shape === 'whole' && spoken.inWords && !spoken.article && isNamedStreet(line, spoken.until))
    return claim(spoken.until + 2);
  if (spoken?.inWords && spoken.shape === 'whole' && spoken.n >= 100 && isStreetSaid(line, i, spoken.until))
    return claim(spoken.until + 1);
  if (!isDigits(line, i) || line.tokens[i]!.text.length < 2) return null;
  for (let k = i + 2; k <= i + 4; k++) {
    const named = line.tokens[k - 1]?.kind === 'word' || k - 1 > i + 1;
    if (named && STREETS.has(line.word(k)) && isName(line, i + 1) && !unitAt(line, i + 1, line.number(i)))
      return claim(k + 1);
  }
  const named =
    /^[A-Z][a-z]{3,}$/.test(line.tokens[i + 1]?.text ?? '') &&
    line.tokens[i + 1]!.spaced &&
    !unitAt(line, i + 1, line.number(i));
  if (isHeaded(line, i)) return claim(i + 2);
  return (line.word(i - 1) === 'at' || isGoneTo(line, i)) && named ? claim(i + 2) : null;
};

/** "412 Oak: hinges adjusted", "12 Elm, spray hose": a house put before what was done in it. */
const isHeaded = (line: Line, i: number) =>
  /^[A-Z][a-z]{2,}$/.test(line.tokens[i + 1]?.text ?? '') &&
  line.tokens[i + 1]!.spaced &&
  (/^[:,/#]$/.test(line.word(i + 2)) || /^(?:rental|residence|house|turn|reno)$/.test(line.word(i + 2))) &&
  (i === 0 || line.tokens[i - 1]!.kind === 'word' || line.tokens[i - 1]!.kind === 'break') &&
  !/^(?:need|needs|get|got|used|have|buy|order|x|by|of|at|are|is|to)$/.test(line.word(i - 1)) &&
  !/[^s]s$/.test(line.word(i + 1)) &&
  !unitAt(line, i + 1, line.number(i));

/** "Go to 44 Birchwood", "deliver it to 9 Larch". */
const isGoneTo = (line: Line, i: number) =>
  line.word(i - 1) === 'to' &&
  [2, 3, 4].some((back) =>
    /^(?:go|going|went|over|deliver|delivered|send|sent|head|drive|back)$/.test(line.word(i - back)),
  );

/** Capitalised, or at least no word that stands between sizes and goods. */
const isName = (line: Line, i: number) =>
  /^[A-Z]/.test(line.tokens[i]?.text ?? '') ||
  (Number(line.tokens[i - 1]?.text) >= 100 && line.tokens[i]?.kind === 'word' && !BETWEEN_SIZES.has(line.word(i)));

/** "She's at four oh eight Juniper": a name behind the number of a house. */
const isStreetSaid = (line: Line, i: number, until: number) =>
  line.word(i - 1) === 'at' &&
  /^(?:'?s|is|are|live|lives|lived|job|house|place|over|back|out|[a-z]+'s)$/.test(line.word(i - 2)) &&
  /^[A-Z][a-z]{3,}$/.test(line.tokens[until]?.text ?? '');

/** "Eighteen Larch Close": written as a name, so no count of goods. */
const isNamedStreet = (line: Line, at: number) =>
  /^[A-Z][a-z]+$/.test(line.tokens[at]?.text ?? '') &&
  /^[A-Z][a-z]+$/.test(line.tokens[at + 1]?.text ?? '') &&
  STREETS.has(line.word(at + 1));
