import Fraction from 'fraction.js';
import { takeBackAt } from '../hearing/takeback.ts';
import type { NotQuantity, Quantity, Token } from '../types.ts';
import { group } from './group.ts';
import { numberAt, type SaidNumber } from './numbers.ts';
import { notQuantitiesIn } from './others.ts';
import { type Unit, unitNamed } from './units.ts';

/** A reading while it is still being put together: plain integers, no Fraction yet. */
export interface Draft {
  n: number;
  d: number;
  from: number;
  until: number;
  unit: Unit | null;
  unitFrom: Quantity['unitFrom'];
  shape: SaidNumber['shape'];
  inWords: boolean;
  rule: string;
  bound?: Quantity['bound'];
  tolerance?: Quantity['tolerance'];
  onCenter?: boolean;
  per?: string;
  group?: Quantity['group'];
  takenBackFrom?: number;
  doubt?: string;
}

/**
 * Every quantity of a note, exact, with the span of its own words, and the numbers that are none.
 * A number that cannot be read for sure is left out: no reading rather than a wrong one.
 */
export function readQuantities(
  tokens: readonly Token[],
  text: string,
): { quantities: Quantity[]; notQuantities: NotQuantity[] } {
  const notQuantities = notQuantitiesIn(tokens, text);
  const claimed = new Uint8Array(tokens.length);
  for (const other of notQuantities) claimed.fill(1, other.from, other.until);
  const drafts: Draft[] = [];
  for (let i = 0; i < tokens.length; ) {
    const draft = claimed[i] ? null : draftAt(tokens, i, claimed);
    if (draft) drafts.push(draft);
    i = draft ? Math.max(draft.until, i + 1) : i + 1;
  }
  const quantities = group(tokens, correct(tokens, drafts)).map((draft) => finish(draft, tokens, text));
  return { quantities, notQuantities };
}

function draftAt(tokens: readonly Token[], i: number, claimed: Uint8Array): Draft | null {
  const token = tokens[i]!;
  if (token.skip) return null;
  const special = timesCount(tokens, i) ?? unitFirst(tokens, i);
  if (special) return special;
  const number = numberAt(tokens, i);
  if (!number || (number.until > i + 1 && claimed.subarray(i, number.until).some(Boolean))) return null;
  if (isPartOfCode(tokens, i, number)) return null;
  const draft: Draft = {
    n: number.n,
    d: number.d,
    from: i,
    until: number.until,
    unit: null,
    unitFrom: 'none',
    shape: number.shape,
    inWords: number.inWords,
    rule: `quantity/${number.shape}`,
  };
  const unit = unitAt(tokens, number.until, number);
  if (unit) {
    draft.unit = unit.unit;
    draft.until = unit.until;
    draft.unitFrom = 'said';
  } else if (number.article) return null;
  else if (number.shape === 'fraction' || (number.shape === 'mixed' && !isCountable(tokens, number))) {
    // A part of one with nothing named is a tape reading: common practice, no source.
    if (
      number.d === 2 &&
      number.inWords &&
      number.shape === 'fraction' &&
      !/^(?:by|inch|off|over|under|up|down|high|low|wide|deep|thick|out|proud|shy)$/.test(
        tokens[number.until]?.word ?? '',
      )
    )
      return halfOf(tokens, draft);
    if (number.d === 3 || number.d === 5) return number.shape === 'fraction' ? null : draft;
    draft.unit = unitNamed('in');
    draft.unitFrom = 'implied';
  }
  feetAndInches(tokens, draft, claimed);
  if (draft.unit?.unit === 'each' || (draft.unit === null && parenthesised(tokens, draft)))
    draft.unit ??= unitNamed('each');
  return draft;
}

/** "half the roll", "half of it" counts nothing that can be bought; "half a bag" was read with its unit. */
function halfOf(tokens: readonly Token[], draft: Draft): Draft | null {
  const next = tokens[draft.until];
  return /^(?:a|an)$/.test(tokens[draft.from + 1]?.word ?? '') && next?.kind === 'word' ? draft : null;
}

/** "Two and a half bags" has its unit; "two and a half sheets of it"; else a mixed number alone is inches. */
const isCountable = (tokens: readonly Token[], number: SaidNumber) =>
  /^(?:of|more|left)$/.test(tokens[number.until]?.word ?? '');

/** x4, ×4, qty 6, (4), 6 of x. */
function timesCount(tokens: readonly Token[], i: number): Draft | null {
  const token = tokens[i]!;
  const before = tokens[i - 1];
  const value = (k: number) =>
    tokens[k]?.kind === 'number' && /^\d+$/.test(tokens[k]!.text) ? Number(tokens[k]!.text) : null;
  const each = (n: number, until: number, rule: string): Draft => ({
    n,
    d: 1,
    from: i,
    until,
    unit: unitNamed('each'),
    unitFrom: 'said',
    shape: 'whole',
    inWords: false,
    rule,
  });
  if (/^[x×]$/.test(token.word) && (before === undefined || before.kind !== 'number' || token.spaced)) {
    const n = value(i + 1);
    if (
      n !== null &&
      !tokens[i + 1]!.spaced &&
      !(before?.kind === 'number' && tokens[i + 1]?.spaced) &&
      !/^["'′″x×]$/.test(tokens[i + 2]?.text ?? '')
    ) {
      if (before?.kind === 'mark' && /["'′″”’]/.test(before.text) && !token.spaced) return null;
      if (!unitAt(tokens, i + 2, null)) return each(n, i + 2, 'quantity/times');
    }
  }
  // "x4" cut as one word: letters then digits.
  const joined = /^[x×](\d{1,4})$/.exec(token.word);
  if (joined && (token.spaced || before?.kind !== 'number')) return each(Number(joined[1]), i + 1, 'quantity/times');
  if (/^(?:qty|quantity|cant)$/.test(token.word)) {
    const k = /^[:.]$/.test(tokens[i + 1]?.text ?? '') ? i + 2 : i + 1;
    const number = numberAt(tokens, k);
    if (number && !number.article && number.d === 1) return each(number.n, number.until, 'quantity/qty');
  }
  if (token.text === '(' && value(i + 1) !== null && tokens[i + 2]?.text === ')') {
    const unit = unitAt(tokens, i + 3, null);
    const pack = unit && (unit.unit.kind === 'pack' || unit.unit.kind === 'count') ? unit : null;
    return {
      ...each(value(i + 1)!, pack ? pack.until : i + 3, 'quantity/parenthesis'),
      ...(pack && { unit: pack.unit }),
    };
  }
  return null;
}

const parenthesised = (tokens: readonly Token[], draft: Draft) =>
  tokens[draft.from - 1]?.text === '(' && tokens[draft.until]?.text === ')' && draft.d === 1;

/** "An inch and a quarter", "inch and five eighths", "a foot and a half": the unit first, the part after. */
function unitFirst(tokens: readonly Token[], i: number): Draft | null {
  let k = i;
  if (/^(?:a|an|one)$/.test(tokens[k]!.word)) k++;
  const unit = tokens[k]?.kind === 'word' ? unitNamed(tokens[k]!.word) : null;
  if (
    !unit ||
    (unit.kind !== 'length' && unit.kind !== 'pack' && unit.kind !== 'volume' && unit.kind !== 'time') ||
    tokens[k + 1]?.word !== 'and' ||
    !/[a-z]{2}/.test(tokens[k]!.word)
  )
    return null;
  if (k === i && unit.kind !== 'length') return null;
  const part = numberAt(tokens, k + 2);
  const half = tokens[k + 2]?.word === 'a' ? numberAt(tokens, k + 3) : part;
  const tail = half && half.shape === 'fraction' ? half : part;
  if (tail?.shape !== 'fraction' || (unitAt(tokens, tail.until, null) && unit.kind !== 'length')) return null;
  return {
    n: tail.d + tail.n,
    d: tail.d,
    from: i,
    until: tail.until,
    unit,
    unitFrom: 'said',
    shape: 'mixed',
    inWords: true,
    rule: 'quantity/unit-first',
  };
}

/** The unit directly after a number, up to three words ("linear feet", "cubic inch"), with "of an", "-" and "." allowed. */
export function unitAt(
  tokens: readonly Token[],
  at: number,
  number: SaidNumber | null,
): { unit: Unit; until: number } | null {
  let k = at;
  while (tokens[k]?.skip) k++;
  if (tokens[k]?.text === '-' && !tokens[k]!.spaced && tokens[k + 1]?.kind === 'word') k++;
  if (tokens[k]?.word === 'of' && /^(?:an|a)$/.test(tokens[k + 1]?.word ?? '') && number?.shape === 'fraction') k += 2;
  if (tokens[k]?.word === 'a' && number?.shape === 'fraction' && number.d === 2) k++;
  for (let words = 3; words >= 1; words--) {
    const part = tokens.slice(k, k + words);
    if (part.length < words || part.some((t) => t.kind === 'break' || t.kind === 'number' || t.skip)) continue;
    const name = part
      .map((t, j) =>
        j > 0 && (t.kind === 'word' ? part[j - 1]!.text !== '-' : false)
          ? ` ${t.word}`
          : j > 0 && t.text === '-'
            ? ' '
            : t.word,
      )
      .join('')
      .replaceAll('  ', ' ');
    const unit = unitNamed(name);
    if (!unit) continue;
    if (!unitFits(tokens, k, k + words, name, unit, number)) continue;
    // "4 in. legs": the abbreviation's own stop belongs to it, unless the sentence ends there.
    const stop = tokens[k + words];
    const dotted =
      stop?.text === '.' &&
      !stop.spaced &&
      /^(?:in|ft|sq ft|lb|lbs|gal|oz|ea|pc|pcs|yd|deg)$/.test(name) &&
      tokens[k + words + 1]?.kind === 'word' &&
      /^[a-z]/.test(tokens[k + words + 1]!.text);
    return { unit, until: k + words + (dotted ? 1 : 0) };
  }
  return null;
}

/** Words that are units only in the right place: "in", "a", "f", "can", "set", a lone quote mark. */
function unitFits(
  tokens: readonly Token[],
  from: number,
  until: number,
  name: string,
  unit: Unit,
  number: SaidNumber | null,
): boolean {
  const token = tokens[from]!;
  const next = tokens[until];
  if (name === 'in')
    return (
      !token.spaced ||
      (!number?.inWords &&
        !(
          next?.kind === 'word' &&
          /^(?:the|a|an|my|our|his|her|this|that|there|here|each|hall|kitchen|bedroom|living|master|all|back|front|some|both|it|place|place|total|unit|room|stock|closet|garage|basement|br|lr|waiting)$/.test(
            next.word,
          )
        ))
    );
  if (/^[mlvwfc]$/.test(name) && number && !number.inWords && !number.article && token.spaced)
    return next?.text !== "'" && (/^[ml]$/.test(name) || /^[A-Z]/.test(token.text));
  if (name === 'min' && /^(?:wants?|needs?|spec|code|is|was|minimum|at)$/.test(tokens[from - 2]?.word ?? ''))
    return false;
  // "1-1/4 coil nails", "3/8 box": packs are not counted in eighths.
  if (unit.kind === 'pack' && number && number.d > 2 && (!number.inWords || number.d > 4)) return false;
  if (
    name === 'a' ||
    name === 'v' ||
    name === 'w' ||
    name === 'f' ||
    name === 'c' ||
    name === 'h' ||
    name === 'm' ||
    name === 'l' ||
    name === 'ma' ||
    name === 'ga' ||
    name === 'nm' ||
    name === 'sh' ||
    name === 'pt' ||
    name === 'sq' ||
    name === 'cs' ||
    name === 'tb' ||
    name === 'ph'
  )
    return !token.spaced || (/^[A-Z]/.test(token.text) && !number?.inWords && name !== 'a');
  if (name === "'" || name === '’' || name === '"' || name === '”') return !token.spaced;
  if (name === 'degree' || name === 'degrees') return true;
  if (name === 'ft' || name === 'yd' || name === 'mil' || name === 'mils') return true;
  if (name === 'minute' || name === 'second' || name === 'seconds')
    return !(number?.article && /^(?:ago|to)$/.test(next?.word ?? ''));
  if (number?.article && unit.close) return next?.word === 'of';
  if (
    number?.article &&
    unit.unit === 'box' &&
    next?.kind === 'word' &&
    /^(?:is|was|in|at|behind|there|on|for|that)$/.test(next.word)
  )
    return false;
  if (
    unit.close &&
    unit.kind === 'pack' &&
    next?.kind === 'word' &&
    /^(?:screws?|lights?|trap|opener|bolts?|drain|spout|surround)$/.test(next.word) &&
    name !== 'tin'
  )
    return false;
  if (name === 'square' || name === 'squares') return true;
  return true;
}

/** "6'-8 1/2\"", "twelve foot four and a half", "8 ft 4": a number after feet is inches and is added. */
function feetAndInches(tokens: readonly Token[], draft: Draft, claimed: Uint8Array): void {
  if (draft.unit?.unit !== 'ft' || draft.d !== 1) return;
  let k = draft.until;
  while (tokens[k]?.skip) k++;
  if (/^[-–,]$/.test(tokens[k]?.text ?? '') && !tokens[k]!.spaced) k++;
  else if (tokens[k]?.word === 'and') k++;
  if (claimed[k]) return;
  const inches = numberAt(tokens, k);
  if (!inches || inches.article || inches.n >= 12 * inches.d) return;
  const own = unitAt(tokens, inches.until, inches);
  const after = tokens[inches.until];
  if (own ? own.unit.unit !== 'in' : !standsAlone(after)) return;
  draft.n = draft.n * 12 * inches.d + inches.n;
  draft.d = inches.d;
  draft.until = own ? own.until : inches.until;
  draft.unit = unitNamed('in');
  draft.rule = 'quantity/feet-inches';
  draft.shape = 'mixed';
}

const standsAlone = (token: Token | undefined) =>
  token === undefined ||
  token.kind !== 'word' ||
  /^(?:by|x|and|wide|long|tall|high|deep|thick|to|off|from|at|on|in|with|up|down|is|but|so|for|of|or|the|which|across|not|apart|clear|out|behind|above|below|between|times|then|w|over|under|inside|outside|total|each|strong|shy|even)$/.test(
    token.word,
  );

/** 12/2 cable, 6/12 pitch, 2868, dates: digits tied to other digits are not read. */
function isPartOfCode(tokens: readonly Token[], i: number, number: SaidNumber): boolean {
  const before = tokens[i - 1];
  const token = tokens[i]!;
  const after = tokens[number.until];
  if (token.kind !== 'number') return false;
  if (
    !token.spaced &&
    before &&
    (before.text === '/' || before.text === '#' || (before.text === ':' && tokens[i - 2]?.kind === 'number')) &&
    tokens[i - 2]?.kind === 'number'
  )
    return true;
  if (
    after?.text === '/' &&
    !after.spaced &&
    tokens[number.until + 1]?.kind === 'number' &&
    !tokens[number.until + 1]!.spaced &&
    number.shape === 'whole'
  )
    return true;
  if (after?.kind === 'word' && !after.spaced && !unitAt(tokens, number.until, number) && !/^[x×]$/.test(after.word))
    return true;
  return !token.spaced && before?.kind === 'word' && !/^[x×]$/.test(before.word) && !/[x×]$/.test(before.word);
}

/** "Six cans of foam, no wait, five": the later number stands, with the earlier one's unit. */
function correct(tokens: readonly Token[], drafts: readonly Draft[]): Draft[] {
  const out: Draft[] = [];
  for (const draft of drafts) {
    const back = out.at(-1);
    const marker = back && markerBetween(tokens, back.until, draft.from);
    if (back && marker !== undefined && marker !== null) {
      const close = draft.from - back.until <= 9;
      if (close && sameSort(back, draft)) {
        out.pop();
        out.push({
          ...draft,
          unit: draft.unitFrom === 'said' ? draft.unit : back.unitFrom === 'said' ? back.unit : draft.unit,
          unitFrom: draft.unitFrom === 'said' ? 'said' : back.unitFrom === 'said' ? 'shared' : draft.unitFrom,
          takenBackFrom: tokens[back.from]!.start,
          rule: `${draft.rule}+taken-back`,
        });
        continue;
      }
    }
    out.push(draft);
  }
  return out;
}

const sameSort = (a: Draft, b: Draft) => a.unit === null || b.unit === null || a.unit.kind === b.unit.kind;

function markerBetween(tokens: readonly Token[], from: number, until: number): number | null {
  for (let k = from; k < until; k++) {
    const marker = takeBackAt(tokens, k);
    // Nothing but "two more" padding may stand between the marker and the number that replaces.
    if (
      marker &&
      marker.scope === 'number' &&
      marker.until <= until &&
      tokens
        .slice(marker.until, until)
        .every(
          (t) =>
            t.kind === 'mark' ||
            t.skip ||
            /^(?:that|it|get|like|about|make|more|to|be|i|mean|it's|need|a)$/.test(t.word),
        )
    )
      return k;
  }
  return null;
}

function finish(draft: Draft, tokens: readonly Token[], text: string): Quantity {
  const { n, d, unit, shape: _shape, inWords: _words, ...rest } = draft;
  const start = tokens[draft.from]!.start;
  const end = tokens[draft.until - 1]!.end;
  return {
    ...rest,
    start,
    end,
    quote: text.slice(start, end),
    value: new Fraction(n, d),
    unit: unit?.unit ?? null,
    unitKind: unit?.kind ?? null,
  };
}
