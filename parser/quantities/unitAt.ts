import type { Line } from './line.ts';
import { isLooseNamed, isPressed, LOOSE, meant, tempered } from './meant.ts';
import { isPacked } from './packed.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { areSquares, areWrittenSquares } from './squares.ts';
import { type Unit, unitNamed } from './units.ts';
import { wordSet } from './words.ts';

/** "Three more boxes", "two full bags": the unit is behind. */
const MORE = wordSet('more extra additional other');
const WHOLE = wordSet('full whole fresh new big small large');

/** "A good inch", "a solid foot". */
const AMPLE = wordSet('good full solid bare strong heavy clean fat scant light');

export interface SaidUnit {
  unit: Unit;
  until: number;
  /** "More" stands before it. */
  more?: true;
}

/** The unit directly behind a number, up to three words ("pounds per square inch"), "of an", "-" and "." allowed. */
export function unitAt(line: Line, at: number, number: SaidNumber | null): SaidUnit | null {
  const k = unitStart(line, at, number);
  const more = MORE.has(line.word(k));
  // "One more full day".
  const whole = WHOLE.has(line.word(more ? k + 1 : k)) ? 1 : 0;
  const behind = (more || whole) && number?.d === 1 ? unitAt(line, k + (more ? 1 + whole : whole), null) : null;
  if (behind && /^(?:pack|volume|time)$/.test(behind.unit.kind)) return more ? { ...behind, more } : behind;
  if (number?.article && AMPLE.has(line.word(k))) {
    const ample = unitAt(line, k + 1, number);
    return ample?.unit.kind === 'length' ? ample : null;
  }
  if (line.tokens[k] === undefined || line.tokens[k]!.kind === 'number') return null;
  if (/^nos?$/.test(line.word(k))) return numberOff(line, k, number);
  let name = '';
  let found: SaidUnit | null = null;
  let words = 0;
  for (let end = k; words < 4 && end < k + 6; end++) {
    const token = line.tokens[end];
    if (token === undefined || token.kind === 'break' || token.kind === 'number') break;
    if (token.text === '-' && words > 0 && !token.spaced) continue;
    if (token.text === '.' && words > 0 && !token.spaced) {
      if (endsAbbreviation(line, end)) found = dotted(found, end + 1);
      continue;
    }
    const joined = !token.spaced && (token.kind === 'mark' || line.tokens[end - 1]!.text === '°');
    name = words === 0 || joined ? name + token.word : `${name} ${token.word}`;
    words++;
    // "Two boxes'll do".
    const unit = unitNamed(name) ?? (name.length > 4 ? unitNamed(name.replace(/'(?:ll|d|ve|re)$/, '')) : null);
    if (unit && fits(line, k, end + 1, name, unit, number))
      found = { unit: meant(line, k, end + 1, unit, number), until: end + 1 };
    if (unit === null && joined && words > 1) break;
  }
  return found;
}

/** `3 no.`, `3no`, `12 nos`: so many, as bills of quantities write it; "3 no 4" takes the three back. */
function numberOff(line: Line, k: number, number: SaidNumber | null): SaidUnit | null {
  const stop = line.tokens[k + 1]?.text === '.' && line.tight(k + 1);
  const written = number?.d === 1 && !number.inWords && (line.tight(k) || stop || line.word(k) === 'nos');
  return written ? { unit: unitNamed('each')!, until: stop ? k + 2 : k + 1 } : null;
}

const dotted = (said: SaidUnit | null, until: number) => said && { unit: said.unit, until };

function unitStart(line: Line, at: number, number: SaidNumber | null): number {
  let k = at;
  // "40ish feet", "forty odd feet", "forty some feet", "two hundred and change feet".
  if (/^(?:ish|odd)$/.test(line.word(k))) k++;
  else if (line.word(k) === 'some') k += line.word(k + 1) === 'odd' ? 2 : 1;
  else if (line.word(k) === 'and' && /^(?:change|some)$/.test(line.word(k + 1))) k += 2;
  else if (line.word(k) === 'and' && line.word(k + 1) === 'a' && line.word(k + 2) === 'bit') k += 3;
  if (line.tokens[k]?.text === '-' && line.tight(k) && line.tokens[k + 1]?.kind === 'word') k++;
  if (number?.shape === 'decimal' && number.n < number.d && line.word(k) === 'of' && /^an?$/.test(line.word(k + 1)))
    return k + 2;
  if (number?.shape !== 'fraction') return k;
  if (line.word(k) === 'of' && /^an?$/.test(line.word(k + 1))) return k + 2;
  if (line.word(k) === 'de') return k + 1;
  return number.d === 2 && /^an?$/.test(line.word(k)) ? k + 1 : k;
}

const ABBREVIATED = wordSet('in ft sq yd lb lbs gal qt oz ea pc pcs deg cu o');

/** "4 in. legs": the stop belongs to the abbreviation unless the sentence ends there. */
function endsAbbreviation(line: Line, stop: number): boolean {
  const next = line.tokens[stop + 1];
  return ABBREVIATED.has(line.word(stop - 1)) && next?.kind === 'word' && /^[a-z]/.test(next.text);
}

/** Abbreviations that are everyday letters: joined to their digits, or a capital behind them. */
const BARS = /^(?:pulls?|handles?|stools?|clamps?|tops?|sinks?|joists?|chairs?|lights?|doors?|faucets?|taps?)$/;
const LETTERS = wordSet('a v w f c h m l g t');
/** Abbreviations that are everyday words or other shorthand, read only behind digits. */
const AFTER_DIGITS = wordSet('ma ga nm sh sq cs tb ph pr pk rl bg hp bar min sec tn pal nr nrs cum kn pa kv mv');
/** "2 in the hall", "30 in stock": a preposition. */
const IN_PLACE = wordSet(
  'the a an my our his her their this that there here each every some any both all it total stock hall kitchen bath bathroom bedroom ' +
    'living dining master back front unit room closet garage basement attic place case between front and good bad one two ' +
    'drawing drawings dwg plan plans spec specs store storage hand use situ series parallel',
);
/** "In a bag on the sill": a place. */
const PLACING = wordSet('in on inside into behind under off through from onto beside');
const GETTING = wordSet('need needs get grab bring buy order another got have has want wants took take used use left');

/** "Code 8830#": the key pressed behind a number; nothing weighed in pounds is written so high. */
const MOST_POUNDS = 1000;

const isBy = (word: string) => /^(?:x|×|by)$/.test(word);

/** Goods were counted a few words before, in the same list. */
function isAfterCount(line: Line, last: number): boolean {
  if (/^(?:and|plus|or)$/.test(line.word(last))) return false;
  for (let k = last; k > last - 7 && k >= 0; k--) {
    if (line.number(k)) return true;
    if (line.tokens[k]!.kind === 'mark' && line.word(k) !== ',') return false;
  }
  return false;
}

/** Whether a word that can name a unit does so here. */
function fits(line: Line, from: number, until: number, name: string, unit: Unit, number: SaidNumber | null): boolean {
  const token = line.tokens[from]!;
  const next = line.word(until);
  const tight = !token.spaced;
  const digits = number !== null && !number.inWords;
  if (number?.article && !articleFits(line, from, next, unit, name)) return false;
  if (name.length === 1 && /["'’”′″]/.test(name))
    return tight && !(line.tight(until) && (next === 's' || next === 't')) && !isQuoted(line, from);
  if (name === 'in')
    return (
      number === null ||
      tight ||
      (number.d > 1 && (digits || line.tokens[from - 1]!.kind === 'number')) ||
      (digits && !IN_PLACE.has(next) && line.tokens[until]?.kind !== 'number')
    );
  if (name === 'cube' || name === 'cubes')
    return number !== null && (next === 'of' || next === 'box' || isLooseNamed(line, from, until));
  // "800 lm" is light.
  if (name === 'lm') return number !== null && number.n < 300 * number.d;
  // "2 t sand", "50# bag".
  if (name === 't') return digits && (LOOSE.has(next) || (next === 'of' && LOOSE.has(line.word(until + 1))));
  if (name === '#')
    return tight && digits && number.n < MOST_POUNDS * number.d && line.tokens[until]?.kind !== 'number';
  // "Ask in 4C": a door's number; degrees stand after words of warmth.
  if (
    name === 'c' &&
    /^(?:in|at|unit|from|for|not|apartment|apt|flat|suite|room|rm|door|item|bay|seat|gate|row|berth)$/.test(
      line.word(from - 2),
    ) &&
    !tempered(line, from)
  )
    return false;
  // `22w x 30h`, `35-1/2 W x 47 H`: sides.
  if (/^[wh]$/.test(name) && (tight || (number?.d ?? 1) > 1) && (isBy(next) || isBy(line.word(from - 2)))) return false;
  // "Scribe 1-1/2 L side".
  if (name === 'l' && /^(?:side|hand|leg|return|end)$/.test(next)) return false;
  if (LETTERS.has(name))
    return (
      (tight && digits) ||
      (digits &&
        (name === 'm' || name === 'l' || name === 'g' || name === 'f' || name === 'v' || /^[VWFCL]$/.test(token.text)))
    );
  // "Fourteen bar pulls": goods, not pressed.
  if (name === 'bar' && BARS.test(next)) return false;
  // "Nought point eight bar": nobody cuts a bar in tenths.
  const pressed =
    name === 'bar' &&
    number !== null &&
    (number.d > 1 ||
      (endsPhrase(line, until) && /^(?:at|to|about|holding|holds|over|under)$/.test(line.word(from - 2))));
  if (AFTER_DIGITS.has(name) && !digits && !pressed) return false;
  // `5/8 dia`, `1050 dia`: a diameter; only one day is a "dia".
  if (name === 'dia') return number?.n === number?.d;
  // "Ten horse", "a three horse pump".
  if (name === 'horse') return number !== null && (endsPhrase(line, until) || MOTORS.has(next));
  // "Nineteen inches of water in the pit" is deep; gas and air are told by their pressure.
  if (unit.unit === 'in wc' && /water$/.test(name)) return isPressed(line, from);
  // "482 pri 209 sec": a transformer's two sides.
  if (name === 'sec' && [2, 3, 4].some((back) => /^pri(?:mary)?$/.test(line.word(from - back)))) return false;
  // "Bin 14 row C", "sht 3 rev C": the word names what stands behind it.
  if (NAMING.has(name) && isName(line, until)) return false;
  if (name === 'pt') return digits && (tight || next === 'of');
  if (name === 'lineal' || name === 'linear') return number !== null && endsPhrase(line, until);
  // "Five footers" may be dug; lengths that follow counted goods are theirs: "two hoses, five footers".
  if (name === 'footer' || name === 'footers')
    return number !== null && number.d === 1 && (number.n >= 6 || (number.n >= 2 && isAfterCount(line, from - 2)));
  if (name === 'sq' && number !== null) return areWrittenSquares(line, from, until, number);
  if (name === 'square') return number !== null && areSquares(line, from, until, number);
  // "Zone two set for seventy": what was done.
  if (name === 'set' && number?.n !== number?.d) return /^(?:|of|[,.;])$/.test(next);
  if (name === 'each') return next !== 'of' && next !== 'way' && number?.d === 1;
  if (unit.kind === 'count') return number === null || number.d === 1;
  if (unit.kind === 'pack') return isPacked(line, from, until, name, unit, number);
  return true;
}

const MOTORS = wordSet('motor motors pump pumps compressor engine saw fan blower drive grinder unit');
const NAMING = wordSet('row course sheet sht load');

/** A letter or a number alone, which nothing is measured by. */
function isName(line: Line, at: number): boolean {
  const name = line.tokens[at];
  if (name?.kind === 'word') return name.spaced && /^[A-HJ-Z]$/.test(name.text);
  if (name?.kind !== 'number') return false;
  const number = line.number(at);
  return (
    number === null ||
    (number.shape === 'whole' && endsPhrase(line, number.until) && !/^(?:x|by)$/.test(line.word(number.until)))
  );
}

/** "A bag", "an hour": one of them. "A box", "a set" only of something, or where somebody gets it. */
function articleFits(line: Line, from: number, next: string, unit: Unit, name: string): boolean {
  if (name.length < 3 && name !== 'qt') return false;
  switch (unit.kind) {
    case 'pack':
    case 'count':
      if (PLACING.has(line.word(from - 2)) && next !== 'of') return false;
      return (
        unit.unit !== 'each' &&
        (next === 'of' ||
          (next === 'or' && line.word(from + 2) === 'two') ||
          // "A box ought to do".
          (/^(?:ought|oughta|should|will|would|might|'ll)$/.test(next) &&
            /^(?:to|do|be|cover|get)$/.test(line.word(from + 2))) ||
          (!unit.close && (unit.unit !== 'box' || GETTING.has(line.word(from - 2)))))
      );
    case 'length':
      return unit.unit !== 'yd' || next === 'of';
    case 'area':
      return unit.unit !== 'square' || next === 'of';
    case 'time':
      return !/^(?:ago|off|or|to)$/.test(next) && !/^(?:once|twice|times|per|half)$/.test(line.word(from - 2));
    case 'volume':
    case 'weight':
      return unit.unit !== 'cup' || next === 'of';
    default:
      return false;
  }
}

/** A number between quotation marks is a name, not inches. */
const isQuoted = (line: Line, mark: number) =>
  line.tokens[mark - 2]?.text === line.tokens[mark]!.text && !line.tight(mark - 2) && line.tight(mark - 1);
