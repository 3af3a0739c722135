import Fraction from 'fraction.js';
import type { NotQuantity, Token } from '../types.ts';
import { numberAt } from './numbers.ts';

type Claim = { until: number; kind: NotQuantity['kind']; value?: Fraction };
type Rule = (tokens: readonly Token[], i: number) => Claim | null;

const LABELLED = new Set(
  'number no unit room bedroom bath bathroom suite station drop circuit ckt panel apt apartment lot phase day step page rev revision item floor level building bldg door window type grade code order wo po invoice permit drawing sheet detail section model cat category class truck crew house light line zone breaker ticket part bay br ba lane row'.split(
    ' ',
  ),
);
const CURRENCY_AFTER = /^(?:dollars?|bucks?|cents?|quid|pounds?|euros?|usd|pesos?|grand|k)$/;

const digits = (token: Token | undefined) => token?.kind === 'number' && /^\d+$/.test(token.text);
const tight = (token: Token | undefined) => token !== undefined && !token.spaced;

/** Phone numbers: 503-555-0188, 555 0177, (503) 555-0188. */
const phone: Rule = (tokens, i) => {
  const run: Token[] = [];
  let k = tokens[i]!.text === '(' ? i + 1 : i;
  while (digits(tokens[k]) || /^[-.)]$/.test(tokens[k]?.text ?? '')) run.push(tokens[k++]!);
  const groups = run.filter((t) => t.kind === 'number').map((t) => t.text.length);
  const shape = groups.join('-');
  if (/^(?:3-)?3-4$/.test(shape) && (run.some((t) => /[-.]/.test(t.text)) || shape === '3-3-4')) {
    while (tokens[k - 1]?.text === '.') k--;
    return { until: k, kind: 'phone' };
  }
  return /^(?:10|11)$/.test(shape) ? { until: i + 1, kind: 'phone' } : null;
};

/** Money: $385, 31.50 dollars, "sixty two bucks", "fee was one fifty". */
const money: Rule = (tokens, i) => {
  if (/^[$£€]$/.test(tokens[i]!.text)) {
    const number = numberAt(tokens, i + 1);
    if (!number) return null;
    const grand = /^(?:k|grand)$/.test(tokens[number.until]?.word ?? '') ? 1000 : 1;
    return {
      until: number.until + (grand > 1 ? 1 : 0),
      kind: 'money',
      value: new Fraction(number.n * grand, number.d),
    };
  }
  const number = numberAt(tokens, i);
  if (!number) return null;
  const next = tokens[number.until];
  const before = tokens[i - 1]?.word ?? '';
  // "eighty pounds on it" is a load; pounds are money only where somebody paid.
  const paid =
    /^(?:paid|cost|costs|spent|for|me|charged|fee|price)$/.test(before) ||
    /^(?:fee|cost|price|total|bill)$/.test(tokens[i - 2]?.word ?? '');
  if (
    next &&
    CURRENCY_AFTER.test(next.word) &&
    (!/^pounds?$/.test(next.word) || paid) &&
    (next.word !== 'k' || tight(next))
  ) {
    return {
      until: number.until + 1,
      kind: 'money',
      value: new Fraction(number.n * (/^(?:k|grand)$/.test(next.word) ? 1000 : 1), number.d),
    };
  }
  const fee = /\b(?:fee|cost|costs|price|ran me|run me|cost me|charged|paid|bill|invoice)\b/.test(
    tokens
      .slice(Math.max(0, i - 3), i)
      .map((t) => t.word)
      .join(' '),
  );
  if (
    fee &&
    !(
      next?.kind === 'word' &&
      /^(?:for|bags?|boxes|sheets?|inch|inches|feet|foot)$/.test(next.word) &&
      next.word !== 'for'
    ) &&
    (next?.kind !== 'word' || !/^(?:hours?|days?|minutes?|men|guys)$/.test(next.word))
  )
    return { until: number.until, kind: 'money', value: new Fraction(number.n, number.d) };
  return null;
};

const HOUR_WORDS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$/;
/** Clock times: 10:30, 4pm, "half past three", "about four thirty" after "it's", "after three". */
const clock: Rule = (tokens, i) => {
  const token = tokens[i]!;
  const [b, c, d] = [tokens[i + 1], tokens[i + 2], tokens[i + 3]];
  if (digits(token) && b?.text === ':' && tight(b) && digits(c) && c!.text.length === 2 && tight(c)) {
    const half = /^(?:am|pm|a|p)$/.test(d?.word ?? '') ? i + 4 : i + 3;
    return { until: half, kind: 'clock' };
  }
  const number = numberAt(tokens, i);
  if (!number || number.article || number.d !== 1) return null;
  const after = tokens[number.until];
  if (/^(?:am|pm|o'clock|oclock|ish)$/.test(after?.word ?? '')) return { until: number.until + 1, kind: 'clock' };
  if (
    /^[ap]$/.test(after?.word ?? '') &&
    tokens[number.until + 1]?.text === '.' &&
    /^m$/.test(tokens[number.until + 2]?.word ?? '')
  )
    return { until: number.until + 3, kind: 'clock' };
  const hour = token.kind === 'number' ? number.n >= 1 && number.n <= 12 : HOUR_WORDS.test(token.word);
  const before = tokens
    .slice(Math.max(0, i - 2), i)
    .map((t) => t.word)
    .join(' ');
  const minutes =
    tokens[i + 1] &&
    /^(?:fifteen|thirty|twenty|forty|ten|oh)$/.test(tokens[i + 1]!.word) &&
    HOUR_WORDS.test(token.word);
  if (minutes && /(?:^|\s)(?:it's about|around|about|at|by|til|till|until|before|after|it's)$/.test(before)) {
    const unit = tokens[number.until]?.word ?? '';
    const timely =
      /(?:it's about|it's|by|until|till|til|before|after)$/.test(before) ||
      /^(?:this|in|tomorrow|today|tonight|sharp|friday|monday|tuesday|wednesday|thursday|so|i'm|and)$/.test(unit) ||
      tokens[number.until] === undefined ||
      tokens[number.until]!.kind !== 'word';
    const end = Math.max(number.until, i + 2);
    if (timely && !/^(?:volts?|inch|inches|feet|foot|percent|degrees|psi|pounds|by|and)$/.test(unit))
      return { until: end, kind: 'clock' };
  }
  if (
    hour &&
    number.until === i + 1 &&
    /(?:^|\s)(?:after|before|until|till|til|past|done at|by|at) ?$/.test(`${tokens[i - 1]?.word ?? ''} `) &&
    (after === undefined ||
      after.kind !== 'word' ||
      /^(?:so|and|tomorrow|today|this|in|monday|tuesday|wednesday|thursday|friday|but|or)$/.test(after.word)) &&
    /^(?:after|before|until|till|til|past)$/.test(tokens[i - 1]?.word ?? '') &&
    !(after?.kind === 'mark' && /["'/%\-–]/.test(after.text))
  )
    return { until: i + 1, kind: 'clock' };
  return null;
};

/** Labels and codes: "unit two", "#4", "drop number three", "W-3614", "day three", "WO 2217", "cat six". */
const label: Rule = (tokens, i) => {
  const before = tokens[i - 1];
  const token = tokens[i]!;
  const number = numberAt(tokens, i);
  if (!number || number.article || number.d !== 1 || number.n < 0) return null;
  if (before?.text === '#' && tight(token)) return { until: number.until, kind: 'label' };
  if (before && LABELLED.has(before.word) && !before.skip && number.n > 0 && number.n < 100000) {
    const next = tokens[number.until];
    const counted =
      next?.kind === 'word' &&
      /^(?:inch|inches|feet|foot|by|x|bags?|boxes|box|sheets?|and|percent|volts?|of|coats?|days?|hours?|more|degrees|amps?)$/.test(
        next.word,
      );
    if (
      !counted &&
      !(next?.kind === 'mark' && /["'/%½¼¾⅛⅜⅝⅞x×]/.test(next.text) && tight(next)) &&
      !(
        /^(?:light|lights|door|window|line|floor|row|sheet|part|section)$/.test(before.word) &&
        /^(?:s|is|are|at|was)$/.test(next?.word ?? '') &&
        number.n > 20
      )
    ) {
      if (
        !/^(?:door|window|floor|sheet|line|light|part|row|level|drop|section|house|truck|lot)$/.test(before.word) ||
        number.until === tokens.length ||
        next?.kind !== 'number'
      )
        return { until: number.until, kind: 'label' };
    }
  }
  // "W-3614", "E4": letters joined to digits.
  if (
    before &&
    tight(token) &&
    before.text === '-' &&
    tokens[i - 2]?.kind === 'word' &&
    tight(before) &&
    /^[A-Z]{1,3}$/.test(tokens[i - 2]!.text)
  )
    return { until: i + 1, kind: 'code' };
  return null;
};

/** 1st, 2nd, "3rd coat". */
const ordinal: Rule = (tokens, i) =>
  digits(tokens[i]) && tight(tokens[i + 1]) && /^(?:st|nd|rd|th)$/.test(tokens[i + 1]?.word ?? '')
    ? { until: i + 2, kind: 'ordinal' }
    : null;

/** A year the house was built in, a calendar year. */
const year: Rule = (tokens, i) => {
  const number = numberAt(tokens, i);
  const before = tokens[i - 1]?.word ?? '';
  if (
    digits(tokens[i]) &&
    /^(?:18|19|20)\d\d$/.test(tokens[i]!.text) &&
    number?.until === i + 1 &&
    !tokens[i + 1]?.text.match(/^["'%/]$/) &&
    (/^(?:in|since|from|of|built|is|circa|about|around|was|before|after)$/.test(before) ||
      tokens[i - 1]?.kind === 'mark')
  )
    return { until: i + 1, kind: 'year' };
  if (
    /^(?:nineteen|eighteen|twenty)$/.test(tokens[i]!.word) &&
    /^(?:ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/.test(
      tokens[i + 1]?.word ?? '',
    ) &&
    /^(?:in|since|is|built|from|was|circa|about|of)$/.test(before)
  ) {
    const tail = numberAt(tokens, i + 1);
    return { until: tail?.d === 1 ? tail.until : i + 2, kind: 'year' };
  }
  if (
    number?.d === 1 &&
    /^(?:built in|house is from|back in)$/.test(
      tokens
        .slice(Math.max(0, i - 2), i)
        .map((t) => t.word)
        .join(' '),
    ) &&
    number.n > 20 &&
    number.n < 100
  )
    return { until: number.until, kind: 'year' };
  return null;
};

const STREETS =
  /^(?:street|st|avenue|ave|road|rd|lane|ln|drive|dr|court|ct|place|pl|way|boulevard|blvd|terrace|close|crescent|highway)$/;
/** House numbers: "at 418 Larch Street", "1440 Poplar". */
const address: Rule = (tokens, i) => {
  if (!digits(tokens[i]) || tokens[i]!.text.length < 2) return null;
  const [name, kind] = [tokens[i + 1], tokens[i + 2]];
  if (name?.kind !== 'word') return null;
  if (kind && STREETS.test(kind.word) && !/^(?:x|by|in|ft|mm)$/.test(name.word))
    return { until: i + 3, kind: 'address' };
  return tokens[i - 1]?.word === 'at' && /^[A-Z][a-z]+$/.test(name.text) && tokens[i]!.text.length >= 3
    ? { until: i + 2, kind: 'address' }
    : null;
};

const IDIOMS = [
  'fifty fifty',
  '50 50',
  'two seconds',
  'one of those days',
  'a million',
  'a ton of',
  'a hundred percent',
  'nine yards',
  'square one',
  'a minute',
  'one more time',
  'one thing',
  'on the one',
  'back to one',
  'a couple times',
  'a second',
  'one day',
  'at one point',
  'nine to five',
  'twenty four seven',
  'two cents',
  'one way or',
  'all in one',
  'a thousand times',
  'half the time',
  'half assed',
  'half way',
  'one guy',
  'a bit',
  'a few',
  'ten minutes ago',
  'first one',
  'a lot',
  'six pack',
  'number one',
  'a while',
  'a hair',
  'a day off',
  'half of it',
  'six ways',
  'two birds',
  'a dozen times',
  'a million years',
  'one hell',
  'one at a time',
  'one by one',
  'second to none',
  'cloud nine',
  'one sec',
  'ten four',
  '10 4',
  'half the battle',
  'two faced',
  'one eighty',
  'a day or two ago',
  'ten out of ten',
  'twice',
  'a big one',
  'one hundred percent',
  'half decent',
  'half bad',
  'a pain',
  'a half bath',
  'half bath',
  'half baths',
  'quarter round',
  'quarter turn',
  'half wall',
  'half round',
  'half door',
  'third party',
  'three prong',
  'two prong',
  'four prong',
  'three way',
  'four way',
  'two part',
  'two pole',
  'double pole',
  'three tab',
  'one coat',
  'two coats',
  'two coat',
  'three coats',
];
const IDIOM_WORDS = IDIOMS.map((s) => s.split(' '));
const idiom: Rule = (tokens, i) => {
  for (const words of IDIOM_WORDS)
    if (words.every((w, k) => tokens[i + k]?.word === w)) return { until: i + words.length, kind: 'idiom' };
  return pronounOne(tokens, i);
};

/** "That one", "the one behind the toilet", "no one", "one of the guys": nobody counts anything. */
function pronounOne(tokens: readonly Token[], i: number): Claim | null {
  const word = tokens[i]!.word;
  if (word !== 'one' && word !== 'ones') return null;
  const before = tokens[i - 1]?.word ?? '';
  const next = tokens[i + 1]?.word ?? '';
  const follows = tokens[i + 1];
  if (
    /^(?:half|quarter|eighth|sixteenth|inch|foot|bag|box|roll|tube|sheet|gallon|gal|more|and|by|hundred|thousand|quart|can|case|pair|piece|each|to|or|point|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|at|no|for|other|on)$/.test(
      next,
    ) &&
    !/^(?:that|the|this|which|no|every|each|other|last|new|old|first|second|next|sink|another|any|bigger|taller|big|small|right|wrong|same)$/.test(
      before,
    )
  )
    return null;
  if (
    /^(?:that|the|this|which|no|every|each|other|last|new|old|next|another|any|bigger|taller|big|small|right|wrong|same|good|washer|sink|first|second|third|only|right|left|dead|bad|back|front|spare)$/.test(
      before,
    )
  )
    return { until: i + 1, kind: 'idiom' };
  if (
    /^(?:of|is|was|s|that|who|thing|day|side|where|behind|in|by|with|under|over|above|guy)$/.test(next) &&
    next !== ''
  )
    return /^(?:of)$/.test(next) && /^(?:the|my|our|his|her|those|these|them|which)$/.test(tokens[i + 2]?.word ?? '')
      ? { until: i + 1, kind: 'idiom' }
      : next === 'of'
        ? null
        : { until: i + 1, kind: 'idiom' };
  return follows === undefined || follows.kind === 'word' || follows.kind === 'mark' || follows.kind === 'break'
    ? null
    : { until: i + 1, kind: 'idiom' };
}

const RULES: readonly Rule[] = [phone, idiom, money, clock, address, ordinal, year, label];

/** What looks like a number and counts nothing. Claimed before any quantity is read. */
export function notQuantitiesIn(tokens: readonly Token[], text: string): NotQuantity[] {
  const out: NotQuantity[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!;
    const claim = token.skip || token.kind === 'break' ? null : firstClaim(tokens, i);
    if (!claim) {
      i++;
      continue;
    }
    const [start, end] = [token.start, tokens[claim.until - 1]!.end];
    out.push({
      kind: claim.kind,
      from: i,
      until: claim.until,
      start,
      end,
      quote: text.slice(start, end),
      ...(claim.value && { value: claim.value }),
    });
    i = claim.until;
  }
  return out;
}

function firstClaim(tokens: readonly Token[], i: number): Claim | null {
  for (const rule of RULES) {
    const claim = rule(tokens, i);
    if (claim) return claim;
  }
  return null;
}
