import type { Token } from '../types.ts';

/** A number as said: integer numerator over denominator, so that nothing is ever rounded. */
export interface SaidNumber {
  n: number;
  d: number;
  until: number;
  /** How it was built; a fraction alone is nearly always inches. */
  shape: 'whole' | 'fraction' | 'mixed' | 'decimal';
  /** Said in words, at least in part. */
  inWords: boolean;
  /** "a", "an": counts only in front of a unit. */
  article?: true;
}

const ONES: Record<string, number> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  un: 1,
  uno: 1,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
  siete: 7,
  ocho: 8,
  nueve: 9,
  diez: 10,
};
const TENS: Record<string, number> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const PARTS: Record<string, number> = {
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fourth: 4,
  fourths: 4,
  fifth: 5,
  fifths: 5,
  eighth: 8,
  eighths: 8,
  eight: 8,
  eights: 8,
  tenth: 10,
  tenths: 10,
  sixteenth: 16,
  sixteenths: 16,
  sixteen: 16,
  medio: 2,
  media: 2,
  cuarto: 4,
  cuartos: 4,
  octavo: 8,
  octavos: 8,
};
// "eight" and "sixteen" stand for their parts only behind "and three", as dictation clips them; see `partAt`.
const CLIPPED = new Set(['eight', 'eights', 'sixteen']);
const GLYPHS: Record<string, [number, number]> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};
const TAPE_PARTS = new Set([2, 3, 4, 5, 6, 8, 10, 16, 32, 64]);

const live = (tokens: readonly Token[], i: number) => {
  let k = i;
  while (tokens[k]?.skip === 'filler' || tokens[k]?.skip === 'repeat') k++;
  return k;
};

/** The number that starts at token `i`, longest reading, or null. */
export function numberAt(tokens: readonly Token[], i: number): SaidNumber | null {
  const token = tokens[i];
  if (!token || token.skip) return null;
  return token.kind === 'number' ? digitsAt(tokens, i) : token.kind === 'word' ? wordsAt(tokens, i) : null;
}

function digitsAt(tokens: readonly Token[], i: number): SaidNumber | null {
  const token = tokens[i]!;
  const glyph = GLYPHS[token.text];
  if (glyph) return { n: glyph[0], d: glyph[1], until: i + 1, shape: 'fraction', inWords: false };
  if (token.text.includes('.')) {
    const places = token.text.length - token.text.indexOf('.') - 1;
    return {
      n: Number(token.text.replace(/[.,]/g, '')),
      d: 10 ** places,
      until: i + 1,
      shape: 'decimal',
      inWords: false,
    };
  }
  const whole = Number(token.text.replaceAll(',', ''));
  if (!Number.isSafeInteger(whole)) return null;
  const fraction = slashAt(tokens, i);
  if (fraction) return { ...fraction, shape: 'fraction', inWords: false };
  // "1 3/8", "1-3/8", "1½", "2 and 3/8", "2 and a half"
  let k = i + 1;
  const joint = tokens[k];
  if (joint?.kind === 'mark' && /^[-–]$/.test(joint.text) && !joint.spaced) k++;
  else if (joint?.word === 'and' || joint?.word === '&') k = live(tokens, k + 1);
  const after = tokens[k];
  const tail =
    after?.kind === 'number'
      ? GLYPHS[after.text]
        ? { n: GLYPHS[after.text]![0], d: GLYPHS[after.text]![1], until: k + 1 }
        : slashAt(tokens, k)
      : joint?.word === 'and'
        ? partAt(tokens, k)
        : null;
  if (tail && tail.n < tail.d)
    return {
      n: whole * tail.d + tail.n,
      d: tail.d,
      until: tail.until,
      shape: 'mixed',
      inWords: after?.kind !== 'number',
    };
  if (tokens[i + 1]?.word === 'point' && tokens[i + 2]?.kind === 'number') {
    const places = tokens[i + 2]!.text.length;
    return {
      n: whole * 10 ** places + Number(tokens[i + 2]!.text),
      d: 10 ** places,
      until: i + 3,
      shape: 'decimal',
      inWords: true,
    };
  }
  return { n: whole, d: 1, until: i + 1, shape: 'whole', inWords: false };
}

/** `3/8`, `5/16ths`: a slash with no blanks and a tape's denominator. `12/2` is cable and `6/12` a pitch: not here. */
function slashAt(tokens: readonly Token[], i: number): { n: number; d: number; until: number } | null {
  const [a, slash, b, tail] = [tokens[i], tokens[i + 1], tokens[i + 2], tokens[i + 3]];
  if (a?.kind !== 'number' || slash?.text !== '/' || slash.spaced || b?.kind !== 'number' || b.spaced) return null;
  const [n, d] = [Number(a.text), Number(b.text)];
  if (!Number.isInteger(n) || !Number.isInteger(d) || !TAPE_PARTS.has(d) || n >= d || tokens[i + 3]?.text === '/')
    return null;
  return { n, d, until: tail && !tail.spaced && /^(?:ths|th|nds|rds|nd)$/.test(tail.word) ? i + 4 : i + 3 };
}

/** A part of one after "and", or alone: "a half", "three eighths", "quarter", "five thirty seconds". */
function partAt(tokens: readonly Token[], i: number, clipped = true): { n: number; d: number; until: number } | null {
  let k = live(tokens, i);
  const first = tokens[k];
  if (first?.kind !== 'word') return null;
  let n = 1;
  let counted = false;
  if (first.word === 'a' || first.word === 'an' || first.word === 'one') {
    k = live(tokens, k + 1);
    counted = first.word === 'one';
  } else if (
    ONES[first.word] !== undefined &&
    ONES[first.word]! > 0 &&
    PARTS[tokens[k + 1]?.word ?? ''] !== undefined
  ) {
    n = ONES[first.word]!;
    counted = true;
    k = live(tokens, k + 1);
  } else if (ONES[first.word] !== undefined && /^(?:thirty|sixty)$/.test(tokens[k + 1]?.word ?? '')) {
    n = ONES[first.word]!;
    counted = true;
    k += 1;
  }
  if (tokens[k]?.text === '-') k++;
  const word = tokens[k]?.word ?? '';
  if (word === 'thirty' && /^seconds?$/.test(tokens[k + 1]?.word ?? '') && counted) return { n, d: 32, until: k + 2 };
  if (word === 'sixty' && /^fourths?$/.test(tokens[k + 1]?.word ?? '') && counted) return { n, d: 64, until: k + 2 };
  const d = PARTS[word];
  if (d === undefined || n >= d || (CLIPPED.has(word) && !(clipped && counted && n > 1))) return null;
  return { n, d, until: k + 1 };
}

function wordsAt(tokens: readonly Token[], i: number): SaidNumber | null {
  const part = partAt(tokens, i, false);
  const word = tokens[i]!.word;
  if (part && !(word === 'third' || word === 'fourth' || word === 'fifth' || word === 'eighth' || word === 'tenth')) {
    // "half a dozen", "half a box", "half of"
    let until = part.until;
    if (/^(?:a|an)$/.test(tokens[until]?.word ?? '') && part.d === 2 && part.until === i + 1) until++;
    const dozen = tokens[until]?.word === 'dozen';
    return dozen
      ? { n: 6, d: 1, until: until + 1, shape: 'whole', inWords: true }
      : { n: part.n, d: part.d, until, shape: 'fraction', inWords: true };
  }
  if (/^(?:couple|dozen)$/.test(word) || (word === 'a' && /^(?:couple|dozen)$/.test(tokens[i + 1]?.word ?? ''))) {
    const k = word === 'a' ? i + 1 : i;
    const until = tokens[k + 1]?.word === 'of' && tokens[k]!.word === 'couple' ? k + 2 : k + 1;
    return { n: tokens[k]!.word === 'dozen' ? 12 : 2, d: 1, until, shape: 'whole', inWords: true };
  }
  const whole = cardinalAt(tokens, i);
  if (!whole)
    return word === 'a' || word === 'an'
      ? { n: 1, d: 1, until: i + 1, shape: 'whole', inWords: true, article: true }
      : null;
  const k = whole.until;
  const next = tokens[live(tokens, k)]?.word;
  if (next === 'and') {
    const at = live(tokens, live(tokens, k) + 1);
    const tail = tokens[at]?.kind === 'number' ? slashAt(tokens, at) : partAt(tokens, at);
    if (tail) return { n: whole.n * tail.d + tail.n, d: tail.d, until: tail.until, shape: 'mixed', inWords: true };
  } else if (next === 'point') {
    const digits: string[] = [];
    let at = live(tokens, k) + 1;
    while (tokens[at]) {
      const t = tokens[at]!;
      const digit =
        t.kind === 'number' && /^\d+$/.test(t.text)
          ? t.text
          : t.word === 'oh' || t.word === 'zero'
            ? '0'
            : ONES[t.word] !== undefined && ONES[t.word]! < 10
              ? String(ONES[t.word])
              : null;
      if (digit === null) break;
      digits.push(digit);
      at++;
    }
    const tail = digits.join('');
    if (tail)
      return {
        n: whole.n * 10 ** tail.length + Number(tail),
        d: 10 ** tail.length,
        until: at,
        shape: 'decimal',
        inWords: true,
      };
  } else {
    // "twelve three eighths": the "and" swallowed. Only where the part is counted.
    const at = live(tokens, k);
    const tail =
      tokens[at]?.kind === 'number'
        ? slashAt(tokens, at)
        : ONES[tokens[at]?.word ?? ''] !== undefined
          ? partAt(tokens, at, false)
          : null;
    if (tail && tail.d > 2)
      return { n: whole.n * tail.d + tail.n, d: tail.d, until: tail.until, shape: 'mixed', inWords: true };
  }
  return { n: whole.n, d: 1, until: k, shape: 'whole', inWords: true };
}

/** "Sixty two", "a hundred and four", "one twenty" (120), "two fifty" (250), "three thousand". */
function cardinalAt(tokens: readonly Token[], i: number): { n: number; until: number } | null {
  let k = i;
  let total = 0;
  let group = 0;
  let last: 'none' | 'one' | 'ten' | 'hundred' | 'thousand' = 'none';
  let until = -1;
  while (tokens[k]) {
    const token = tokens[k]!;
    if (token.skip === 'filler') {
      k++;
      continue;
    }
    const word = token.word;
    if (token.text === '-' && last === 'ten' && ONES[tokens[k + 1]?.word ?? ''] !== undefined) {
      k++;
      continue;
    }
    const one = ONES[word];
    const ten = TENS[word];
    if (one !== undefined && token.kind === 'word') {
      // "one" then "twenty": spoken hundreds; "two" then "three" are two numbers.
      if (last === 'one' || (last === 'ten' && one > 9)) break;
      if (
        last === 'ten' &&
        partAt(tokens, k, false) &&
        tokens[k + 1] &&
        PARTS[tokens[k + 1]!.word] &&
        PARTS[tokens[k + 1]!.word] !== undefined &&
        !CLIPPED.has(tokens[k + 1]!.word)
      )
        break;
      group += one;
      last = one > 9 ? 'ten' : 'one';
      if (one > 9) last = 'one';
    } else if (ten !== undefined) {
      if (last === 'one' && group > 0 && group < 10 && until === i + 1) group *= 100;
      else if (last === 'one' || last === 'ten') break;
      if (ten === 30 && /^seconds?$/.test(tokens[k + 1]?.word ?? '') && last === 'one') break;
      group += ten;
      last = 'ten';
    } else if (word === 'hundred') {
      if (last === 'hundred' || last === 'ten') break;
      group = Math.max(group, 1) * 100;
      last = 'hundred';
    } else if (word === 'thousand') {
      total += Math.max(group, 1) * 1000;
      group = 0;
      last = 'thousand';
    } else if (word === 'a' && k === i && /^(?:hundred|thousand)$/.test(tokens[k + 1]?.word ?? '')) {
      k++;
      continue;
    } else if (
      word === 'and' &&
      (last === 'hundred' || last === 'thousand') &&
      (ONES[tokens[k + 1]?.word ?? ''] !== undefined || TENS[tokens[k + 1]?.word ?? ''] !== undefined) &&
      PARTS[tokens[k + 2]?.word ?? ''] === undefined
    ) {
      k++;
      continue;
    } else break;
    k++;
    until = k;
  }
  if (until < 0) return null;
  // "One eighteen", "two fifteen": a small number and a teen are spoken hundreds where both stand alone.
  const teen = ONES[tokens[until]?.word ?? ''];
  if (
    until === i + 1 &&
    total === 0 &&
    group > 0 &&
    group < 10 &&
    teen !== undefined &&
    teen > 9 &&
    tokens[i]!.kind === 'word' &&
    !tokens[until]!.skip
  )
    return { n: group * 100 + teen, until: until + 1 };
  return { n: total + group, until };
}
