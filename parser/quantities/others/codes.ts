import { feetDashInches } from '../feet.ts';
import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';
import { isPlural } from './labels.ts';

const claimed = (until: number): Claim => ({ until, kind: 'code' });

const ROLLS = wordSet('roll coil reel spool');
const PARAGRAPHS = wordSet('section table article chapter figure paragraph');
const WRITTEN_CODES = /^(?:[A-Z]{2,4}|[B-HJ-WYZ])$/;

/** "SW 7008", "RAL 9010", "HC 172", "color 7008": a name in capitals and its number, in a note that is not all capitals. */
function isPaintCode(line: Line, i: number): boolean {
  const text = line.tokens[i]!.text;
  if (!/^\d{3,4}$/.test(text)) return false;
  const before = line.tokens[i - 1];
  if (before?.kind !== 'word') return false;
  if (/^colou?r$/.test(before.word) || (/^(?:is|was|number)$/.test(before.word) && /^colou?r$/.test(line.word(i - 2))))
    return true;
  const around = [line.tokens[i - 2], line.tokens[i + 1]].some(
    (t) => t?.kind === 'word' && /^[a-z][a-z']*$/.test(t.text),
  );
  return WRITTEN_CODES.test(before.text) && around;
}

/** W-3614, 2868, 12-2, 4B, long numbers bare of any unit. */
export const code: ClaimRule = (line, i) => {
  // A paragraph of the code book: "section 310.16", "table 250.66".
  if (PARAGRAPHS.has(line.word(i - 1)) && /^\d+\.\d+$/.test(line.word(i))) return claimed(i + 1);
  // "Off a 250 roll": how long the roll is, by which it is called.
  if (/^(?:a|the|that|one)$/.test(line.word(i - 1)) && /^\d{2,3}$/.test(line.word(i)) && ROLLS.has(line.word(i + 1)))
    return claimed(i + 1);
  const named = doorCode(line, i) ?? refrigerant(line, i);
  if (named) return named;
  if (!isDigits(line, i)) return spokenCode(line, i);
  if (feetDashInches(line, i)) return null;
  const { text } = line.tokens[i]!;
  const [joint, before] = [line.tokens[i - 1], line.tokens[i - 2]];
  const lettered =
    joint?.text === '-' &&
    line.tight(i) &&
    line.tight(i - 1) &&
    before?.kind === 'word' &&
    /^(?:[A-Z]{1,4}\d*|[A-Z][A-Za-z]*[A-Z])$/.test(before.text);
  if (lettered) return claimed(i + 1);
  // "VAT no 6388047V": no voltage is so high.
  const letters = line.tokens[i + 1];
  const tied = letters?.kind === 'word' && !letters.spaced && /^[A-Z]{1,3}$/.test(letters.text);
  if (tied && (text.length > 6 || (text.length > 3 && REGISTERED.has(line.word(i - 1))))) return claimed(i + 2);
  if (RODS.test(text) && !unitAt(line, i + 1, line.number(i)) && !/^(?:x|by)$/.test(line.word(i + 1)))
    return claimed(i + 1);
  const dash = line.tokens[i + 1];
  // Cable by its gauge and wires: 12-2, 14/3; a range goes up.
  if (
    /^(?:6|8|10|12|14|16)$/.test(text) &&
    dash &&
    /^[-/]$/.test(dash.text) &&
    !dash.spaced &&
    line.tight(i + 2) &&
    /^[234]$/.test(line.word(i + 2))
  )
    return line.tight(i + 3) && /^["'/]$/.test(line.word(i + 3)) ? null : claimed(i + 3);
  // `8-6`, `10-2`: feet and inches or cable, nobody can say; a range goes up.
  const down =
    dash && /^[-–]$/.test(dash.text) && !dash.spaced && line.tight(i + 2) && Number(line.word(i + 2)) <= Number(text);
  if (
    down &&
    line.number(i)?.until === i + 1 &&
    line.number(i + 2)?.shape === 'whole' &&
    !unitAt(line, i + 3, line.number(i + 2))
  )
    return claimed(i + 3);
  if (isPaintCode(line, i) && !/^(?:x|×|by)$/.test(line.word(i + 1)) && !unitAt(line, i + 1, line.number(i)))
    return claimed(i + 1);
  // "P.O. 44-1932": two long numbers and a hyphen.
  if (
    dash &&
    /^[-–]$/.test(dash.text) &&
    !dash.spaced &&
    line.tight(i + 2) &&
    /^\d{4,}$/.test(line.word(i + 2)) &&
    /^\d{2,}$/.test(text)
  )
    return claimed(i + 3);
  const sized = /^[x×/"'”’.%-]$/.test(dash?.text ?? '') && !dash!.spaced;
  const bare = !sized && line.word(i + 1) !== 'x' && line.word(i + 1) !== 'by' && !unitAt(line, i + 1, line.number(i));
  const door =
    /^[1-4]\d[67]8$/.test(text) && /^(?:door|doors|slab|slabs|prehung|left|right|lh|rh)$/.test(line.word(i + 1));
  const joined = line.word(i - 1) === 'x' || line.word(i - 1) === 'by';
  return !joined && bare && (door || text.length > 4 || (text.length > 1 && text.startsWith('0')))
    ? claimed(i + 1)
    : null;
};

const REGISTERED = wordSet(
  'no number reg vat abn ein licence license permit ref reference policy serial tag plate rego vin account acct cert',
);

/** Welding rods by their class (AWS A5.1). */
const RODS = /^(?:6010|6011|6012|6013|7014|7018|7024|8018)$/;

/** Refrigerants that end in a letter (ASHRAE 34): "four ten A", "four oh seven C". */
const REFRIGERANTS: ReadonlySet<number> = new Set([
  134, 404, 407, 408, 409, 410, 422, 438, 448, 449, 452, 454, 507, 513,
]);

function refrigerant(line: Line, i: number): Claim | null {
  const number = line.number(i);
  if (!number || number.d > 1 || !REFRIGERANTS.has(number.n)) return null;
  const letter = line.tokens[number.until]?.text ?? '';
  const named =
    /^[A-F]$/.test(letter) ||
    (/^[abc]$/.test(letter) && endsPhrase(line, number.until + 1) && !unitAt(line, number.until, number));
  return named ? claimed(number.until + 1) : null;
}

/** "30 68 door", "2 0 6 8 door", "a three oh door": its feet and inches run together. */
function doorCode(line: Line, i: number): Claim | null {
  let k = i;
  while (k < i + 4 && (/^\d{1,2}$/.test(line.word(k)) || DOOR_SIDES.has(line.word(k)))) k++;
  return k - i > 1 && DOORS.has(line.word(k)) && !isPlural(line.word(k)) ? claimed(k) : null;
}

const DOOR_SIDES = wordSet('oh one two three four six eight ten');
const GAUGES = wordSet('six eight ten twelve fourteen');
const DOORS = wordSet('door doors slab slabs prehung opening');

/** "Twelve two to the box" is cable, "two eight door" and "twenty eight sixty eight door" doors: two numbers side by side. */
function spokenCode(line: Line, i: number): Claim | null {
  const first = line.number(i);
  const second = first?.shape === 'whole' && !first.article && first.until > i ? line.number(first.until) : null;
  if (second?.shape !== 'whole' || second.article || !second.inWords) return null;
  if (DOORS.has(line.word(second.until))) return claimed(second.until);
  const wires = /^(?:two|three)$/.test(line.word(first!.until)) && second.until === first!.until + 1;
  const apart =
    !unitAt(line, second.until, second) &&
    !/^(?:by|x)$/.test(line.word(second.until)) &&
    !isPlural(line.word(second.until));
  return GAUGES.has(line.word(i)) && wires && apart ? claimed(second.until) : null;
}
