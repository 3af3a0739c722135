import { readOnce } from '../reading/readOnce.ts';
import type { Said } from '../reading/said.ts';

const HOUSE =
  '(?:house|home|place|building|bungalow|ranch|colonial|cottage|farmhouse|duplex|triplex|cape|victorian|rowhouse|condo)';
const TENS = ['ten', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const ONES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const DECADES = ['tens', 'twenties', 'thirties', 'forties', 'fifties', 'sixties', 'seventies', 'eighties', 'nineties'];
const BUILT = `(?:${HOUSE}|built|went up|goes back|dates)`;

const DIGITS = new RegExp(
  `\\b${BUILT}\\b[^.]{0,30}?\\b(1[89]\\d\\d|20[0-2]\\d)s?\\b|\\b(1[89]\\d\\d|20[0-2]\\d)s? (?:\\w+ )?${HOUSE}\\b`,
);
const SPOKEN = new RegExp(
  `\\b${BUILT}\\b[^.]{0,30}?\\b(?:in|is|from|was|to)\\s+(?:(nineteen|eighteen)[ -])?(${TENS.join('|')})(?:[ -](${ONES.join('|')}))?\\b|\\b(nineteen|eighteen)[ -](${TENS.join('|')})(?:[ -](${ONES.join('|')}))? (?:\\w+ )?${HOUSE}\\b`,
);
const DECADE = new RegExp(
  `\\b${BUILT}\\b[^.]{0,30}?\\b(?:the )?(?:(?:early|mid|late)[ -])?(?:(${DECADES.join('|')})|'?([1-9])0s)\\b`,
);

/** "62 house", "it's a '48 bungalow". */
const SHORT_YEAR = new RegExp(`(?:^|[.;,] |\\b(?:an?|the|is|it's|this) )'?([2-9]\\d) (?:\\w+ )?${HOUSE}\\b`);

/** The year that a note says the house was built; of a decade the first year, the safe end. Null where none says. */
export function builtIn(notes: readonly Said[]): number | null {
  for (const note of notes) {
    const year = yearIn(note);
    if (year !== null) return year;
  }
  return null;
}

const yearIn = readOnce(({ text }): number | null => {
  const said = text.toLowerCase();
  const digits = DIGITS.exec(said);
  if (digits) return Number(digits[1] ?? digits[2]);
  const spoken = SPOKEN.exec(said);
  if (spoken) {
    const [century, tens, ones] = spoken[2] ? spoken.slice(1, 4) : spoken.slice(4, 7);
    const past = (TENS.indexOf(tens!) + 1) * 10 + (ones ? ONES.indexOf(ones) + 1 : 0);
    return (century === 'eighteen' ? 1800 : 1900) + past;
  }
  const short = SHORT_YEAR.exec(said);
  if (short) return 1900 + Number(short[1]);
  const decade = DECADE.exec(said);
  return decade && 1900 + (decade[1] ? DECADES.indexOf(decade[1]) + 1 : Number(decade[2])) * 10;
});
