import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import type { SaidNumber } from '../saidNumber.ts';
import { unitAt } from '../unitAt.ts';
import { isBy, wordSet } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';
import { endOfSpan, isListOfNames, isSecondName } from './spans.ts';

/** Words that give the number behind them as a name. */
const NAMED = wordSet(
  'bowl season episode psalm hymn verse rink addendum docket squad battalion platoon regiment local stall hangar court pew error err nfpa osha oshas hockey gpa engine game league formula ral pantone kubota jlg stihl honda bobcat scheme mode option alternate keynote mark number unit suite apt apartment circuit ckt lot interstate marker license serial page revision rev order invoice permit po wo job ticket model cat category type grade schedule sch ' +
    'irc ibc nec upc nfpa chevy ford dodge ram iphone wd series channel aisle slot locker extension bus track route rt rm zip highway hwy exit chapter version phase class breaker stage code ext combo pin gate plan item note bus tram flight platform terminal junction pier studio berth shade rm rfi submittal tier bulletin asi package clause amendment appendix act csi rtu ahu vav fcu rcd mcb pump isle ward ofc ste lockbox acct acc villa dorm hse hook keypad branch allotment riser key tag fob user pass snag dwg usb hdmi iso astm ansi csa',
);
/** The same, unless a size follows: "window three", but "window 36 x 48". */
const NAMED_UNLESS_SIZED = wordSet(
  'room bedroom block column footing bath bathroom floor door window drop bay line zone day week sheet drawing detail section level building bldg house truck crew part row ' +
    'lane step station loop stair flat apto bed tread cam washer dryer cabin deck trailer mailbox drwr drawer cell joist post hole coat take fix plot dock bin table seat desk tower wing rm bedsit pod tank boiler valve container hut shed condenser furnace inverter manifold camera figure question division mark port jack strand string pile vlan relay turbine hydrant',
);
const SIZED = wordSet('by x × wide high tall deep long thick and or to of is are at more');
const LETTERED = wordSet(
  'sheet drawing page detail section plan lot block unit apartment apt room permit gate bay row column grid panel',
);
/** What a number describes without counting: "a two story house", "three way switch", "one man job". */
const DESCRIBED = wordSet(
  'digit hander legged leaf seater wheeler layer handle handled compartment basin story storey man person car way part pole prong gang tab star go hole bedroom bath point speed stage phase panel lite year-old step tone ply',
);

const claim = (until: number): Claim => ({ until, kind: 'label' });

/** "Unit two", "#4", "drop number three", "day three", "cat six", "three way", "five quarter". */
export const label: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (!number || number.article || number.until > line.tokens.length) return null;
  // "3/8 hole": the 8 belongs to the fraction.
  if (line.tokens[i - 1]?.text === '/' && line.tight(i)) return null;
  // "Schedule forty inch and a half": the pipe's wall, then its size.
  if (/^(?:schedule|sch|sched)$/.test(line.word(i - 1)) && /^(?:forty|eighty|40|80|10|ten)$/.test(line.word(i)))
    return claim(i + 1);
  const next = line.word(number.until);
  const dash = line.tokens[number.until]?.text === '-' ? 1 : 0;
  const k = number.until + dash;
  // "Two pole sander heads", "three bedroom doors": so many of them.
  const counted =
    /^(?:pole|ply|bedroom|bath|door)$/.test(line.word(k)) &&
    [1, 2].some(
      (d) =>
        isPlural(line.word(k + d)) &&
        !/^(?:units|homes|houses|apartments|suites|breakers|switches)$/.test(line.word(k + d)),
    );
  const described =
    !counted && DESCRIBED.has(line.word(number.until + dash)) && number.n < 12 * number.d && !isBy(line.word(i - 1));
  if (described && (number.d === 1 || line.word(number.until) === 'bath')) return claim(number.until + dash + 1);
  if (
    /^(?:four|five|six|eight|[4568])$/.test(line.word(i)) &&
    line.word(i + 1) === 'quarter' &&
    !/^inch/.test(line.word(i + 2))
  )
    return claim(i + 2);
  if (isHyphened(line, number.until)) return claim(number.until + 2);
  // "Ten tons of fifty seven stone": how coarse it is (ASTM D448).
  if (
    COARSE.has(number.n) &&
    /^(?:stone|rock|limestone)$/.test(next) &&
    /^(?:of|tons?|yards?|yds?|#)$/.test(line.word(i - 1))
  )
    return claim(number.until);
  // "Two ought": wire; "forty fives", "twenty twos": fittings by their angle.
  if (number.d === 1 && number.n < 5 && /^(?:ought|aught)$/.test(next)) return claim(number.until + 1);
  if (/^(?:forty fives|twenty twos)$/.test(`${line.word(i)} ${next}`)) return claim(number.until + 1);
  // "R two point five batts".
  if (
    number.shape === 'decimal' &&
    ((/^(?:r|version|ver|clause|section|software|firmware|nec|irc|ibc|upc|ipc|imc|ifc|nfpa|osha|code|fig|figure)$/.test(
      line.word(i - 1),
    ) &&
      !areTold(line, i)) ||
      isLettered(line, i))
  )
    return claim(number.until);
  if (number.d !== 1) return null;
  // "To the shed thirteen of em".
  if (next === 'of' && /^(?:em|'em|them|those|these|each)$/.test(line.word(number.until + 1))) return null;
  const before = nameBefore(line, i);
  const span = endOfSpan(line, i, number);
  if (span) return claim(span);
  if (isRoomIn(line, i, number) || isListOfNames(line, i, number) || isSecondName(line, i, number))
    return claim(number.until);
  if (before === '#' && line.tight(i)) return claim(number.until);
  if (isLettered(line, i)) return claim(number.until);
  if (
    (before === '.' && line.word(i - 2) === 'no' && line.tight(i - 1)) ||
    // "R nineteen by twenty three": how well a batt keeps heat, and its width.
    (before === 'r' && next === 'by' && R_VALUES.has(number.n)) ||
    // "R 19" keeps heat; "they r 5' apart" measures.
    (before === 'r' && !areTold(line, i) && !/^(?:by|x|×|oc|o|on)$/.test(next) && !unitAt(line, number.until, number))
  )
    return claim(number.until);
  const named =
    isExtension(line, i) ||
    (before === 'to' && /^keys?$/.test(line.word(i - 2))) ||
    (NAMED.has(before) && !isOrdered(line, i, number)) ||
    (before === 'is' &&
      /^(?:code|combo|pin|zip|number|extension|lockbox|password|passcode|keypad|rego|plate|model|ref|reference)$/.test(
        line.word(i - 2),
      ));
  if (!named && !NAMED_UNLESS_SIZED.has(before)) return null;
  const mark = line.tokens[number.until];
  // "Apartment 12C": the letter is part of the name.
  if (
    mark &&
    !mark.spaced &&
    (/^[A-Z]$/.test(mark.text) && !isDegrees(mark.text, number)
      ? named || ROOMS.has(before)
      : isRoomLetter(before, mark.text))
  )
    return claim(number.until + 1);
  // "Apartment 3 C", "item 3a".
  if (mark?.spaced && HOMES.has(before) && /^[B-H]$/.test(mark.text)) return claim(number.until + 1);
  if (mark && !mark.spaced && PARAGRAPHS.has(before) && /^[a-h]$/.test(mark.text)) return claim(number.until + 1);
  // "Clause 804 in, rolled": a paragraph has no inches.
  const placed = next === 'in' && mark!.spaced && PAPERS.has(before);
  if (
    (unitAt(line, number.until, number) && !placed) ||
    (mark?.kind === 'mark' && !mark.spaced && /^["'/%”’]$/.test(mark.text))
  )
    return null;
  if (named) return next === 'by' || next === 'x' ? null : claim(wholeName(line, number.until));
  // "Room 212 smells": nobody counts by the hundred behind a room.
  const hundreds = ROOMS.has(before) && number.n >= 100;
  if (isPlural(next) && !hundreds) return null;
  const ends = mark === undefined || mark.kind !== 'word' || !SIZED.has(next);
  // Rooms and sections are numbered by the hundred.
  const highest = HOMES.has(before) ? 10_000 : /^(?:room|section|detail|sheet|building|bldg)$/.test(before) ? 1000 : 40;
  return number.n > 0 &&
    number.n < highest &&
    (ends || /^(?:is|are|and|of)$/.test(next)) &&
    next !== 'x' &&
    mark?.kind !== 'number'
    ? claim(wholeName(line, number.until))
    : null;
};

/** "Bays r 2.35": they are so wide; of batts it is how well they keep heat. */
const areTold = (line: Line, i: number) =>
  line.tokens[i - 1]?.text === 'r' &&
  isPlural(line.word(i - 2)) &&
  !/^(?:batts|walls|sheets|boards)$/.test(line.word(i - 2));

const PAPERS = wordSet(
  'clause section article invoice permit po policy docket ticket rfi submittal apartment apt unit suite',
);
const PARAGRAPHS = wordSet('item note detail section option clause line paragraph question');

/** "555-0143 ext 22", which shorthand takes for the outside. */
const isExtension = (line: Line, i: number) =>
  /^ext$/i.test(line.tokens[i - 1]?.text ?? '') && line.tokens[i - 2]?.kind === 'number';

const ROOMS = wordSet('door room rm window stair');
const HOMES = wordSet('seat flat apartment apt unit suite room rm door plot lot block bldg building house');

/** "Room 83F": no room goes by that letter so high. */
const isDegrees = (letter: string, { n }: SaidNumber) => letter === 'F' && n >= 40 && n < 200;

/** "Flat 4b". */
const isRoomLetter = (before: string, letter: string) => HOMES.has(before) && /^[a-h]$/.test(letter);

/** "Sheet A five hundred", "column b four": a letter of its own before the number. */
const isLettered = (line: Line, i: number) =>
  isLetterOfName(line, i) ||
  (LETTERED.has(line.word(i - 2)) &&
    (/^[A-HJ-Z]$/.test(line.tokens[i - 1]?.text ?? '') ||
      /^[b-hj-z]$/.test(line.word(i - 1)) ||
      (line.word(i - 1) === 'a' && /^(?:sheet|drawing|page|detail)$/.test(line.word(i - 2)))));

/** "Beam B seven", "of G five": a capital of its own, and none that a side of a size goes by. */
const isLetterOfName = (line: Line, i: number) =>
  line.tokens[i - 1]?.spaced === true &&
  line.tokens[i]!.spaced &&
  /^[BCE-GJKMNP-SUVYZ]$/.test(line.tokens[i - 1]!.text) &&
  line.word(i - 2) !== '&' &&
  endsPhrase(line, line.number(i)!.until) &&
  !isBy(line.word(line.number(i)!.until));

const R_VALUES: ReadonlySet<number> = new Set([11, 13, 15, 19, 21, 23, 30, 38, 49, 60]);

const CALLED =
  /^(?:code|combo|pin|extension|zip|number|lockbox|password|passcode|keypad|rego|plate|model|reference|ref|order|invoice|serial|ext|job|ticket|case|claim|account|badge|login)'s$/;

/** The word before a number, its "is" left off where a name follows: "the code's 9914", but "the unit's twenty four" is a size. */
const nameBefore = (line: Line, i: number) =>
  CALLED.test(line.word(i - 1)) ? line.word(i - 1).slice(0, -2) : line.word(i - 1);

/** Sizes of crushed stone by their numbers in ASTM D448. */
const COARSE: ReadonlySet<number> = new Set([3, 4, 5, 8, 57, 67, 78, 89, 411]);

const SHEETS = /^(?:page|sheet|sht|drawing|part|day|step|phase)$/;

/** "Work order 19-332", "job twenty two oh six": all figures of the name. */
function wholeName(line: Line, until: number): number {
  const dashed = line.word(until) === '-' && line.tight(until) && line.tight(until + 1);
  if (dashed && (isDigits(line, until + 1) || /^[A-Z]$/.test(line.tokens[until + 1]?.text ?? ''))) return until + 2;
  // "Page 3 of 12".
  const total = line.word(until) === 'of' && SHEETS.test(line.word(until - 2)) ? line.number(until + 1) : null;
  if (total?.shape === 'whole') return total.until;
  let k = until;
  if (line.word(k) === 'oh') k++;
  while (k > until && line.number(k) && line.tokens[k]!.kind === 'word') k++;
  return k > until + 1 ? k : until;
}

const MEASURING = /^(?:came|come|comes|coming|measured|measures|dialed|dialled|set|cut|one|1|go|goes|went)$/;
const AFTER_ROOM = wordSet('the a an is was has had says he she it they we i put still');

/** "The valve in twelve is weeping", "absent in 30, 31, 34": rooms by their number. */
function isRoomIn(line: Line, i: number, number: SaidNumber): boolean {
  if (number.shape !== 'whole' || unitAt(line, number.until, number)) return false;
  let k = i - 1;
  while (/^(?:,|and|&)$/.test(line.word(k)) && line.tokens[k - 1]?.kind === 'number') k -= 2;
  const before = line.word(k - 1);
  if (line.word(k) !== 'in' || MEASURING.test(before) || line.number(k - 1)) return false;
  const next = line.tokens[number.until];
  return next === undefined || next.kind === 'break' || /^[,.:;&]$/.test(next.text) || AFTER_ROOM.has(next.word);
}

const VERBS = wordSet('order stage mark plan note');
const BEFORE_VERB = wordSet(
  "to and then also please i we you they i'll we'll you'll let's lets gotta gonna must should can could will just",
);

/** "Order sixteen two by tens", "we stage four doors": the word is a verb there, and "order 60031" is no count. */
function isOrdered(line: Line, i: number, number: SaidNumber): boolean {
  const before = line.tokens[i - 2];
  const verb =
    VERBS.has(line.word(i - 1)) &&
    (before === undefined ||
      before.kind !== 'word' ||
      BEFORE_VERB.has(before.word) ||
      isGoodsBehind(line, number.until));
  const goods = line.tokens[number.until];
  if (!verb) return false;
  // "Both balances are gone, order 2."
  if (goods === undefined || goods.kind !== 'word') return number.n < 100 && goods?.text !== '-' && goods?.text !== '#';
  return number.n < 1000 && !BEING.has(goods.word);
}

/** "Order two eight foot sticks", "order three slats". */
const isGoodsBehind = (line: Line, at: number) =>
  line.number(at) !== null || [0, 1].some((d) => isPlural(line.word(at + d)));

const BEING = wordSet('is was are were has had came comes should will');

/** "48-port", "30-lite": what a thing is, not how many. */
const isHyphened = (line: Line, at: number) =>
  line.tokens[at]?.text === '-' &&
  line.tight(at) &&
  line.tight(at + 1) &&
  line.tokens[at + 1]?.kind === 'word' &&
  !/^(?:by|x|and|to|or|no|ish)$/.test(line.word(at + 1)) &&
  !unitAt(line, at, null);

/** "Drop two treads": they are counted. */
export const isPlural = (word: string) => /[^s']s$/.test(word) && word.length > 3 && !VERBS_OF_IT.has(word);

/** What a room or a plot does, rather than a plural. */
const VERBS_OF_IT = wordSet(
  'wants needs gets looks smells leaks goes comes says sits stays runs drips feels sounds starts opens closes still always',
);
