import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { isOpening, isSideInFeet } from './sides.ts';
import { unitAt } from './unitAt.ts';
import { unitNamed } from './units.ts';
import { isBy, tellsLength, wordSet } from './words.ts';

export const INCH = unitNamed('in')!;

/** Behind a comma these begin a size of their own: "7 foot, 2 inch pipe" is no 7 ft 2. */
const SIZE_OF_ITS_OWN =
  /^(?:thick|deep|wide|tall|high|long|pipes?|pvc|abs|copper|pex|cpvc|conduit|emt|duct|hose|tubing|drain|waste|vent|line|kerf|blade|joints?|beads?|gaps?|notch)$/;

/** `6'-8 1/2"`, "twelve foot four and a half", `8 ft 4`: a number behind feet is inches and is added to them. */
export function inchesBehind(line: Line, draft: Draft): Draft {
  if (draft.unit?.unit !== 'ft' || draft.d !== 1 || draft.n < 1) return draft;
  // "8 footers, eighth inch kerf": boards are called by whole feet; "214 LF 5-1/4" is so much of a size.
  if (/^(?:footers?|lf|lft|lnft|lineal|linear)$/.test(line.word(draft.until - 1))) return draft;
  if (/^(?:running|lineal|linear|liner|lin)$/.test(line.word(draft.until - 2))) return draft;
  const joint = line.tokens[draft.until];
  const dash = joint !== undefined && /^[-–]$/.test(joint.text) && line.tight(draft.until + 1);
  const named = joint?.text === ',' || joint?.word === 'and';
  const k = dash || named ? draft.until + 1 : draft.until;
  const inches = line.number(k);
  if (!inches || inches.article || inches.n >= 12 * inches.d || (inches.n === 0 && inches.inWords)) return draft;
  // "Post every 8 ft. three 8 ft rails": the next sentence counts.
  if (inches.inWords && line.tokens[draft.until - 1]?.text === '.' && line.number(inches.until)) return draft;
  const behind = unitAt(line, inches.until, inches);
  // "5-ft 6-1/2 tub": behind feet and a part of an inch stands the thing itself, nothing that is packed by the tub.
  const own = behind?.unit.kind === 'pack' && inches.d > 1 ? null : behind;
  if (own ? own.unit !== INCH : named || isCountPer(line, inches.until) || !areInches(line, inches, draft.from))
    return draft;
  // "Sixteen foot, four inch thick" are two sizes.
  if (joint?.text === ',' && own && SIZE_OF_ITS_OWN.test(line.word(own.until))) return draft;
  return {
    ...draft,
    n: draft.n * 12 * inches.d + inches.n,
    d: inches.d,
    until: own?.until ?? inches.until,
    unit: INCH,
    shape: 'mixed',
    rule: 'quantity/feet-inches',
  };
}

/** "Thirteen foot, five to a bay", "8 ft 2 of em": how many of them. */
const isCountPer = (line: Line, at: number) =>
  /^(?:per|apiece)$/.test(line.word(at)) ||
  (line.word(at) === 'of' && /^(?:em|'em|them|those|these)$/.test(line.word(at + 1))) ||
  (line.word(at) === 'to' && /^(?:a|an|each|every)$/.test(line.word(at + 1)));

/** "Eight three and a half": feet with the word swallowed, which nobody can know for sure. */
export function feetUnsaid(line: Line, draft: Draft, feet: SaidNumber): Draft | null {
  if (feet.shape !== 'whole' || !feet.inWords || feet.pieces || feet.n < 1 || feet.n > LONGEST) return null;
  const inches = line.number(feet.until);
  if (!inches?.inWords || inches.article || inches.n >= 12 * inches.d) return null;
  if (isSideInFeet(line, draft.from)) return { ...swallowed(draft, feet, inches), doubt: undefined };
  if (isToldBesideFeet(line, draft.from, inches)) return swallowed(draft, feet, inches);
  if (feet.n < 5) return isToldOf(line, draft.from, inches) ? swallowed(draft, feet, inches) : null;
  const run = inches.shape === 'whole' && (isRunTold(line, draft.from, inches.until) || isEvenly(line, inches.until));
  const shaped =
    run ||
    (feet.n <= 20 &&
      (inches.shape === 'mixed' || (inches.shape === 'whole' && areFeetSaid(line, draft.from))) &&
      line.word(feet.until - 1) === line.word(draft.from));
  if (!shaped) return null;
  // "A five ten and a half door": one of them.
  const one = /^(?:a|the|that|this)$/.test(line.word(draft.from - 1)) && !/[^s]s$/.test(line.word(inches.until));
  if (!(one || endsPhrase(line, inches.until))) return null;
  if (inches.shape === 'whole' && isBy(line.word(inches.until))) return null;
  return swallowed(draft, feet, inches);
}

/** Feet and inches whose words were swallowed, with the question that this leaves. */
function swallowed(draft: Draft, feet: SaidNumber, inches: SaidNumber): Draft {
  const whole = Math.floor(inches.n / inches.d);
  const rest = inches.d > 1 ? `${whole}-${inches.n % inches.d}/${inches.d}` : `${whole}`;
  return {
    ...draft,
    n: feet.n * 12 * inches.d + inches.n,
    d: inches.d,
    until: inches.until,
    unit: INCH,
    unitFrom: 'implied',
    shape: 'mixed',
    rule: 'quantity/feet-inches',
    doubt: `${feet.n} ft ${rest} in, or ${feet.n} of ${rest} in?`,
  };
}

/** "The opening's two six wide", "is eight four tall": feet and inches of a side that is named. */
const isToldOf = (line: Line, from: number, inches: SaidNumber) =>
  inches.shape === 'whole' && tellsLength(line.word(from - 1)) && SIDES.test(line.word(inches.until));

/** "The wall's thirty one six by nine foot". */
function isToldBesideFeet(line: Line, from: number, inches: SaidNumber): boolean {
  const other = isBy(line.word(inches.until)) ? line.number(inches.until + 1) : null;
  const feet = other ? unitAt(line, other.until, other)?.unit.unit === 'ft' : false;
  return feet && inches.shape === 'whole' && tellsLength(line.word(from - 1));
}

const SIDES = /^(?:wide|tall|high|deep|long|clear|overall|even|apart)$/;

/** No run of a house is told shorter than it is by leaving out the words. */
const LONGEST = 90;
const RUNS = wordSet(
  "side side's room room's kitchen kitchen's garage garage's bay bay's hall hall's porch patio driveway pool grade grade's opening opening's wall wall's run runs ridge hip hips valley eave eave's eaves rake rakes span spans rafter rafters joist joists beam beam's header header's fence length plate deck deck's slab slab's trench",
);

/** "The long wall's twenty six four", "the hip runs eighteen two": of what is told in feet. */
function isRunTold(line: Line, from: number, until: number): boolean {
  if (!tellsLength(line.word(from - 1)) || !endsPhrase(line, until) || isBy(line.word(until))) return false;
  for (let k = from - 1; k > from - 8 && k >= 0; k--) if (RUNS.has(line.word(k))) return true;
  return false;
}

/** "Twelve six long", "twenty two four even". */
const isEvenly = (line: Line, until: number) => SIDES.test(line.word(until));

/** How far back feet may have been said: "twelve foot to the ridge, eleven nine to the eave". */
const FEET_REACH = 16;

function areFeetSaid(line: Line, from: number): boolean {
  for (let k = Math.max(0, from - FEET_REACH); k < from; k++) if (/^(?:foot|feet|ft)$/.test(line.word(k))) return true;
  return false;
}

/** `7 ft x 8-4`, `2-6 x 6-8 door`: beside feet that were said, or in a pair, a dash joins feet and inches. Elsewhere `8-4` may be a range or a code. */
export function feetDashInches(line: Line, i: number): Draft | null {
  const [feet, inches] = [line.tokens[i], line.tokens[i + 2]];
  const behind = /^(?:x|by|×)$/.test(line.word(i - 1));
  const paired =
    (behind && isDashed(line, i - 4) && isOpening(line, i + 3)) ||
    (/^(?:x|by|×)$/.test(line.word(i + 3)) && isDashed(line, i + 4) && isOpening(line, i + 7));
  // "3 1/2 x 11 7/8 x 18-0": nothing runs from eighteen to nought.
  const even = behind && line.word(i + 2) === '0';
  const beside = paired || even || (behind && unitNamed(line.word(i - 2))?.unit === 'ft');
  // "Bifold 5-0".
  const named = /^(?:bifold|slider|prehung|pocket)$/.test(line.word(i - 1));
  const dashed = line.tokens[i + 1]?.text === '-' && line.tight(i + 1) && line.tight(i + 2);
  if (!(beside || named) || !dashed || !/^[1-9]\d?$/.test(feet?.text ?? '') || !/^(?:\d|1[01])$/.test(inches!.text))
    return null;
  if (unitAt(line, i + 3, null) || (line.tight(i + 3) && !/^[.,;)]$/.test(line.tokens[i + 3]?.text ?? '.')))
    return null;
  const n = Number(feet!.text) * 12 + Number(inches!.text);
  const rule = 'quantity/feet-inches';
  return { n, d: 1, from: i, until: i + 3, unit: INCH, unitFrom: 'said', shape: 'mixed', inWords: false, rule };
}

/** `6-8`: one figure, a dash, and less than twelve. */
const isDashed = (line: Line, i: number) =>
  /^[1-9]\d?$/.test(line.word(i)) &&
  line.tokens[i + 1]?.text === '-' &&
  line.tight(i + 1) &&
  line.tight(i + 2) &&
  /^(?:\d|1[01])$/.test(line.word(i + 2));

const LUMBER = wordSet('two four six eight ten twelve fours sixes eights tens twelves 2 3 4 6 8 10 12');

/** "Six foot eight header" but "eight foot two brackets", "twelve foot two by fours". */
function areInches(line: Line, inches: SaidNumber, from: number): boolean {
  const next = line.tokens[inches.until];
  // "By ten foot two ceilings eight foot nine": the next thing has a size of its own, so none are counted.
  const own = isBy(line.word(from - 1)) ? line.number(inches.until + 1) : null;
  if (own && unitAt(line, own.until, own)?.unit.kind === 'length') return true;
  if (isBy(next?.word ?? '')) {
    const nominal = inches.d === 1 && /^(?:one|two|four|six|1|2|4|6)$/.test(line.word(inches.until - 1));
    const other = line.number(inches.until + 1);
    // "Ten foot six by twelve eight": the other side is feet and inches, too.
    const third = other ? line.number(other.until) : null;
    if (third?.inWords && !third.article && third.n < 12 * third.d) return true;
    return !(nominal && LUMBER.has(line.word(inches.until + 1)) && !(other && unitAt(line, other.until, other)));
  }
  // "Eighty four feet, one straight run": the one counts the run.
  if (line.word(inches.until - 1) === 'one' && inches.d === 1 && !endsPhrase(line, inches.until)) return false;
  if (next && !next.spaced && /^[/'’]$/.test(next.text)) return false;
  return inches.d > 1 || endsPhrase(line, inches.until) || !/[^s]s$/.test(next?.word ?? '');
}
