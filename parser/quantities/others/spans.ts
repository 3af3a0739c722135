import type { Line } from '../line.ts';
import type { SaidNumber } from '../saidNumber.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';

const MANY_NAMED = wordSet(
  'items notes steps questions pages seats stalls bays tanks pumps vavs rtus sections drawings units rooms circuits breakers lots houses apartments apts flats suites plots gates zones floors levels channels sheets exits lanes doors windows tracks lockers buildings ports jacks strands strings relays poles piers piles',
);
/** Doors and windows are told by their width, too. */
const FEWEST_INCHES = 18;

const ONE_NAMED = wordSet(
  'port jack strand string relay pole pier pile breaker room unit circuit zone lot apt apartment',
);
/** "Port 17 n 18 swapped": the second is a name as the first is. */
export function isSecondName(line: Line, i: number, number: SaidNumber): boolean {
  if (number.shape !== 'whole' || !/^(?:and|n|&|or)$/.test(line.word(i - 1))) return false;
  const first = [2, 3].find((back) => line.number(i - back)?.until === i - 1);
  return (
    first !== undefined &&
    ONE_NAMED.has(line.word(i - first - 1)) &&
    !unitAt(line, number.until, number) &&
    !/[a-z]{3}s$/.test(line.word(number.until))
  );
}

/** "Units four and six", "circuits 9, 11 and 13": several names at once. */
export function isListOfNames(line: Line, i: number, number: SaidNumber): boolean {
  if (!MANY_NAMED.has(line.word(i - 1)) || !/^(?:and|or|to|thru|through|,|&)$/.test(line.word(number.until)))
    return false;
  const other = line.number(number.until + 1);
  const sized = /^(?:doors|windows)$/.test(line.word(i - 1)) && number.n >= FEWEST_INCHES && number.n < 100;
  return other?.shape === 'whole' && !other.article && !sized && !unitAt(line, other.until, other);
}

const SPANNED = wordSet(
  'frame frames grid grids gridline gridlines bent bents pier piers pile piles bay bays row rows bin bins level levels deck decks cabin cabins station',
);

/** "Frame 112 to 118 port side", "grid 4 to 9": from the one to the other. Where the second ends; 0 where it is a size. */
export function endOfSpan(line: Line, i: number, number: SaidNumber): number {
  if (!SPANNED.has(line.word(i - 1)) || !/^(?:to|thru|through)$/.test(line.word(number.until))) return 0;
  const other = line.number(number.until + 1);
  const measured =
    !other ||
    unitAt(line, other.until, other) ||
    /^(?:by|x|wide|high|tall|deep|long|thick|apart|centers|centres|oc)$/.test(line.word(other.until));
  return other?.shape === 'whole' && !measured && other.n > number.n && !tellsOfIt(line, i) ? other.until : 0;
}

/** "Frame bay": the word is what somebody does, or it is measured. */
const tellsOfIt = (line: Line, i: number) => /^(?:to|each|every|per|a)$/.test(line.word(i - 2));
