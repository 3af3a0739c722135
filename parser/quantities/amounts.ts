import type { Draft } from './draft.ts';
import { feetDashInches, feetUnsaid } from './feet.ts';
import { wordPartAt } from './fractions.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { slopeAt } from './slopes.ts';
import { metresTied, withSmaller } from './smaller.ts';
import { onTape } from './tape.ts';
import { unitAt } from './unitAt.ts';
import { unitNamed } from './units.ts';

const EACH = unitNamed('each')!;

/** One number with its unit: the reading that starts at `i`, or null where none can be made for sure. */
export function amountAt(line: Line, i: number): Draft | null {
  const counted =
    timesAt(line, i) ??
    quantityAt(line, i) ??
    parenthesisAt(line, i) ??
    unitFirstAt(line, i) ??
    feetDashInches(line, i) ??
    metresTied(line, i) ??
    slopeAt(line, i);
  if (counted) return counted;
  const number = line.number(i);
  if (!number || isTied(line, i, number)) return null;
  const draft: Draft = {
    ...draftOf(number, i),
    ...(number.doubt && { doubt: number.doubt }),
  };
  const unit = number.doubt ? null : unitAt(line, number.until, number);
  if (isCountOfInches(line, i, number)) return draft;
  if (unit) {
    if (isPlaceInRow(line, number, unit.unit.kind)) return null;
    draft.unit = unit.unit;
    draft.bareUntil = draft.until;
    draft.until = unit.until;
    draft.unitFrom = 'said';
    if (unit.more) draft.more = true;
    belowZero(line, draft);
    return withSmaller(line, draft);
  }
  if (number.article) return null;
  belowZero(line, draft);
  const tall = feetUnsaid(line, draft, number);
  if (tall) return tall;
  if (number.pieces) return { ...draft, unit: EACH, unitFrom: 'said' };
  return number.shape === 'fraction' || number.shape === 'mixed' ? onTape(line, draft, number) : draft;
}

const draftOf = (number: SaidNumber, from: number): Draft => ({
  n: number.n,
  d: number.d,
  from,
  until: number.until,
  unit: null,
  unitFrom: 'none',
  shape: number.shape,
  inWords: number.inWords,
  rule: `quantity/${number.shape}`,
});

/** "A third bag", "a fifth box": a place in a row. "A third of a bag" is a part. */
const isPlaceInRow = (line: Line, number: SaidNumber, kind: string) =>
  number.shape === 'fraction' &&
  number.inWords &&
  number.n === 1 &&
  number.d !== 2 &&
  number.d !== 4 &&
  kind !== 'length' &&
  line.word(number.until) !== 'of';

const isTimes = (line: Line, i: number) => /^[x×]$/.test(line.word(i));

/** "x4", "×4", "x 24" at the end of what is counted. Between sizes it is "by". */
function timesAt(line: Line, i: number): Draft | null {
  const token = line.tokens[i]!;
  const joined = /^[x×](\d{1,4})$/.exec(token.word);
  const sized = !token.spaced || line.tokens[i - 1]?.kind === 'number';
  if (joined && !(sized && !token.spaced)) return packed(line, countOf(Number(joined[1]), i, i + 1, 'quantity/times'));
  if (!isTimes(line, i)) return null;
  const next = line.tokens[i + 1];
  if (next?.kind !== 'number' || !/^\d{1,4}$/.test(next.text) || (next.spaced !== token.spaced && next.spaced))
    return null;
  // "36 1/4 w x 80 1/2 h": a size.
  if (line.number(i + 1)?.until !== i + 2) return null;
  const before = line.tokens[i - 1];
  const measures = before !== undefined && (before.kind === 'number' || /^["'”’″′]$/.test(before.text)) && next.spaced;
  const after = line.tokens[i + 2];
  if (!token.spaced || measures || (before?.kind === 'number' && next.spaced)) return null;
  if (after && !after.spaced && after.kind !== 'break' && !/^[,.;)]$/.test(after.text)) return null;
  return unitAt(line, i + 2, null) || (isUnitWord(line, i - 1) && next.spaced && !isCutLength(line, i))
    ? null
    : countOf(Number(next.text), i, i + 2, 'quantity/times');
}

/** "x2 tubes": what they come in. */
function packed(line: Line, count: Draft): Draft {
  const said = unitAt(line, count.until, null);
  return said && /^(?:pack|count)$/.test(said.unit.kind) ? { ...count, unit: said.unit, until: said.until } : count;
}

/** `140x45 5.4m x 8`, `22mm copper 3m x 4`: a section stands before the length, so what follows it is how many. */
const isCutLength = (line: Line, times: number) =>
  line.tokens[times - 2]?.kind === 'number' &&
  endsPhrase(line, times + 2) &&
  [3, 4, 5].some(
    (back) =>
      line.word(times - back) === 'mm' ||
      (line.tokens[times - back]?.kind === 'number' && isTimes(line, times - back - 1)),
  );

const isUnitWord = (line: Line, i: number) => unitNamed(line.word(i))?.kind === 'length';

/** "Qty 6", "qty: 12". */
function quantityAt(line: Line, i: number): Draft | null {
  if (!/^(?:qty|quantity)$/.test(line.word(i))) return null;
  const k = /^[:.=]$/.test(line.tokens[i + 1]?.text ?? '') ? i + 2 : i + 1;
  const number = line.number(k);
  // "Qty 42 cum", "qty 4 rolls": so much of a measure.
  const measure = number && unitAt(line, number.until, number);
  if (measure && measure.unit.kind !== 'count') return null;
  return number && !number.article && number.d === 1 ? countOf(number.n, i, number.until, 'quantity/qty') : null;
}

/** "(4) ea", "(6)", "(8) can lights". */
function parenthesisAt(line: Line, i: number): Draft | null {
  const number = line.tokens[i]!.text === '(' ? line.number(i + 1) : null;
  if (!number || number.inWords || number.d !== 1 || line.tokens[number.until]?.text !== ')') return null;
  const unit = unitAt(line, number.until + 1, number);
  const within = unit && (unit.unit.kind === 'pack' || unit.unit.kind === 'count') ? unit : null;
  const draft = countOf(number.n, i, within?.until ?? number.until + 1, 'quantity/parenthesis');
  return within ? { ...draft, unit: within.unit } : draft;
}

const countOf = (n: number, from: number, until: number, rule: string): Draft => ({
  n,
  d: 1,
  from,
  until,
  unit: EACH,
  unitFrom: 'said',
  shape: 'whole',
  inWords: false,
  rule,
});

/** "An inch and a quarter", "inch and five eighths", "a foot and a half", "an hour and a half": the unit first. */
function unitFirstAt(line: Line, i: number): Draft | null {
  const k = /^(?:a|an|one)$/.test(line.word(i)) ? i + 1 : i;
  if (line.word(k + 1) !== 'and' || line.tokens[k]!.kind !== 'word' || line.word(k).length < 3) return null;
  const unit = unitNamed(line.word(k));
  if (!unit || !(/^(?:length|pack|volume|time|weight)$/.test(unit.kind) || unit.unit === 'square')) return null;
  if (k === i && line.number(i - 1) && !isCountOfInches(line, i - 1, line.number(i - 1)!)) return null;
  const alone = line.number(k + 2);
  const part = alone?.shape === 'fraction' ? alone : manyParts(line, k + 2);
  // "Gallon and a half" with no article before it: only with one behind.
  if (k === i && unit.unit !== 'in' && !(part?.d === 2 && line.word(k + 2) === 'a')) return null;
  const halved = unit.unit === 'in' ? /^(?:a|an|one|half|\d.*)$/ : /^(?:a|an|one|\d.*)$/;
  if (part?.shape !== 'fraction' || (part.n === 1 && !halved.test(line.word(k + 2)))) return null;
  if (line.word(k + 2) === 'half' && /^(?:the|of|my|his)$/.test(line.word(part.until))) return null;
  const own = unitAt(line, part.until, part);
  if (own && (unit.kind !== 'length' || own.unit !== unit)) return null;
  const until = own?.until ?? part.until;
  return {
    ...draftOf({ ...part, n: part.d + part.n, until, shape: 'mixed' }, i),
    unit,
    unitFrom: 'said',
    rule: 'quantity/unit-first',
  };
}

/** "Inch and a quarters": what is so long, of many. */
function manyParts(line: Line, i: number): SaidNumber | null {
  const part = wordPartAt(line, i, true);
  return part && { ...part, shape: 'fraction', inWords: true };
}

/** "Grab two inch and a half traps": two of them, since of many the one inch goes unsaid. */
function isCountOfInches(line: Line, i: number, number: SaidNumber): boolean {
  if (number.shape !== 'whole' || number.article || line.word(number.until) !== 'inch') return false;
  const and = number.until + 1;
  const part = line.word(and) === 'and' && line.word(and + 1) === 'a' ? line.number(and + 1) : null;
  return (
    part?.shape === 'fraction' &&
    COUNTED.test(line.word(i - 1)) &&
    !endsPhrase(line, part.until) &&
    [0, 1].some((k) => /[^s']s$/.test(line.word(part.until + k)))
  );
}

const COUNTED = /^(?:|get|grab|need|needs|bring|buy|order|want|have|got|and|,|of|got|another|used|plus|with|take)$/;

/** "Freezer's minus ten". */
const isTold = (line: Line, { from }: Draft) => {
  const before = line.tokens[from - 2];
  return (
    before === undefined || before.kind === 'break' || /'s$|^(?:is|at|to|was|hit|reads?|shows?)$/.test(before.word)
  );
};

/** "She's forty below", "ten degrees below zero": told of the cold, never of where a thing is set. */
const isBelowZero = (line: Line, { from, until, n, d, unit }: Draft) =>
  d === 1 &&
  (unit === null || unit.unit === 'deg') &&
  line.word(until) === 'below' &&
  (line.word(until + 1) === 'zero' ||
    (n >= LEAST_COLD &&
      /^(?:she's|it's|its|was)$/.test(line.word(from - 1)) &&
      /^(?:|so|and|out|outside|overnight|today|tonight|[.,])$/.test(line.word(until + 1))));
/** Fewer are inches below something. */
const LEAST_COLD = 10;

/** "Minus ten degrees", "-5 C": only of temperatures and of what a dial tells; elsewhere a hyphen joins and never negates. */
function belowZero(line: Line, draft: Draft): void {
  if (isBelowZero(line, draft)) {
    draft.n = -draft.n;
    draft.until += line.word(draft.until + 1) === 'zero' ? 2 : 1;
    return;
  }
  const sign = line.tokens[draft.from - 1];
  const degrees =
    draft.unit?.kind === 'temperature' ||
    (/^(?:minus|negative)$/.test(sign?.word ?? '') && (draft.unit ? draft.unit.unit === 'deg' : isTold(line, draft)));
  if (
    !degrees ||
    !(
      sign?.word === 'minus' ||
      sign?.word === 'negative' ||
      (sign?.text === '-' && sign.spaced && line.tight(draft.from))
    )
  )
    return;
  if (line.word(draft.from - 2) === 'or' || line.tokens[draft.from - 2]?.kind === 'number') return;
  draft.n = -draft.n;
  draft.from--;
}

/** `12/2`, `2868-A`, `4B`: digits tied to letters or to other digits are read by nobody. */
function isTied(line: Line, i: number, number: SaidNumber): boolean {
  if (line.tokens[i]!.kind !== 'number') return false;
  const [before, after] = [line.tokens[i - 1], line.tokens[number.until]];
  const bound = line.tight(i) && before !== undefined;
  if (bound && /^[/#:]$/.test(before.text) && !/^ft|in$/.test(line.word(i - 2)))
    return line.tokens[i - 2]?.kind === 'number' || before.text === '#';
  if (bound && before.kind === 'word' && !isTimes(line, i - 1) && !/\dx$/.test(before.word)) return true;
  if (!after || after.spaced || after.word === 'ish') return false;
  if (after.text === '/' && line.tokens[number.until + 1]?.kind === 'number' && line.tight(number.until + 1))
    return number.shape === 'whole';
  if (after.text === '°') return unitAt(line, number.until, number) === null;
  if (after.kind !== 'word' || isTimes(line, number.until) || unitAt(line, number.until, number)) return false;
  const sized = [i - 1, number.until + 1].some((k) => /^(?:x|by|×)$/.test(line.word(k)));
  return !(sized && /^[swhdl]$/.test(after.word));
}
