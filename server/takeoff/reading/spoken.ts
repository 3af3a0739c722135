import Fraction from 'fraction.js';
import type { Mend } from './mend.ts';
import type { Figure } from './said.ts';
import { PLACE_MENDS, TAKEN_BACK_MENDS } from './spokenPlaces.ts';
import { EARLY_MENDS, SIZE_MENDS } from './spokenSizes.ts';

/** "80# bags": pounds. */
const pounds: Mend = (words, figures) =>
  words.replace(/\{N(\d+)\} ?#(?= |$)/g, (_, id: string) => {
    figures[Number(id)] = { ...figures[Number(id)]!, unit: 'lb', kind: 'weight', sure: true };
    return `{W${id}}`;
  });

/** "Inch and a half square": a section, not half a roofing square. */
const halfSquare: Mend = (words, figures) =>
  words.replace(/\b(?:an? |one )?inch and \{A(\d+)\}/g, (all, id: string) => {
    const figure = figures[Number(id)]!;
    if (figure.unit !== 'square' || figure.value.compare(1) >= 0) return all;
    return `{${length(figures, id, figure.value.add(1), 'in')}} square`;
  });

/** "Point six", "point four five": the words say a decimal. */
const points: Mend = (words, figures) =>
  words.replace(/\bpoint ((?:\{[NCVA]\d+\} ?)+)/g, (all, list: string) => {
    const ids = [...list.matchAll(/\{([A-Z])(\d+)\}/g)];
    const digits = ids.map(([, , id]) => figures[Number(id)]!);
    if (!digits.every((f) => f.value.d === 1n && f.value.compare(100) < 0)) return all;
    const last = digits.at(-1)!;
    const value = new Fraction(`0.${digits.map((f) => f.value.toFraction()).join('')}`);
    figures[Number(ids.at(-1)![2])] = { ...last, value };
    return `{${ids.at(-1)![1]}${ids.at(-1)![2]}} `;
  });

const WHOLE: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3 };

/** "At one point eight centres": the point of a bare figure that was taken for inches. */
const wholePoints: Mend = (words, figures) =>
  words.replace(/\b(one|two|three) point \{[LN](\d+)\}/g, (all, whole: string, id: string) => {
    const figure = figures[Number(id)]!;
    if (figure.sure || figure.value.d !== 1n || figure.value.compare(100) >= 0) return all;
    const value = new Fraction(`${WHOLE[whole]}.${figure.value.toFraction()}`);
    figures[Number(id)] = { ...figure, value, unit: null, kind: null };
    return `{N${id}}`;
  });

/** Makes a figure a sure length and gives its token's name. */
function length(figures: Figure[], id: string, value: Fraction, unit: string): string {
  figures[Number(id)] = { ...figures[Number(id)]!, value, unit, kind: 'length', sure: true };
  return `L${id}`;
}

/** "Foot and a half": the half is of a foot. */
const footAndHalf: Mend = (words, figures) =>
  words.replace(/(^| )(?:an? |one )?foot and \{[LN](\d+)\}/g, (all, space: string, id: string) =>
    figures[Number(id)]!.value.equals(new Fraction(1, 2))
      ? `${space}{${length(figures, id, new Fraction(3, 2), 'ft')}}`
      : all,
  );

const IN_FEET = /\b(?:foot|feet|ft)\b|\d ?['′’]/i;

/** "Five foot six by seven": a bare side up to a dozen beside feet and inches is feet. */
const besideFeet: Mend = (words, figures) =>
  words.replace(
    /\{L(\d+)\}((?: (?:wide|long|deep))?,? ?(?:x|by) ?)\{L(\d+)\}/g,
    (all, a: string, between: string, b: string) => {
      const [first, second] = [figures[Number(a)]!, figures[Number(b)]!];
      const bare = second.unit === 'in' && !/[a-z]*in(?:ch)?|["″”]/i.test(second.quote) && !IN_FEET.test(second.quote);
      if (first.unit !== 'in' || !IN_FEET.test(first.quote) || !bare || second.value.compare(12) > 0) return all;
      return `{L${a}}${between}{${length(figures, b, second.value, 'ft')}}`;
    },
  );

/** "Two at three foot by seven and a half and the back at five by seven and a half": one place beside another in feet. */
const placesBesideFeet: Mend = (words, figures) => {
  const inches = /\d ?["″”]|\b(?:inch|inches|in)\b/i;
  return words.replace(
    /((?:back|front|side|end|left|right|other|wall|one|closet|landing|nook)(?:'s| is| are| at)* )\{L(\d+)\}( ?(?:x|by) ?)\{L(\d+)\}/g,
    (all, place: string, a: string, by: string, b: string, at: number) => {
      const before = [...words.slice(0, at).matchAll(/\{L(\d+)\} ?(?:x|by) ?\{/g)].at(-1);
      const pair = [figures[Number(a)]!, figures[Number(b)]!];
      const bare = pair.every((f) => f.unit === 'in' && !inches.test(f.quote) && !IN_FEET.test(f.quote));
      if (!before || !bare || figures[Number(before[1])]!.unit !== 'ft' || pair.some((f) => f.value.compare(40) > 0))
        return all;
      return `${place}{${length(figures, a, pair[0]!.value, 'ft')}}${by}{${length(figures, b, pair[1]!.value, 'ft')}}`;
    },
  );
};

const CODES: Readonly<Record<string, number>> = { ten: 10, twelve: 12, fourteen: 14, two: 2, three: 3 };

/** "Eleven foot ten by fourteen two": beside feet a cable's code is feet and inches. */
const codeBesideFeet: Mend = (words, figures) =>
  words.replace(
    /(\{L(\d+)\}(?: (?:wide|long|deep))?,? ?(?:x|by) )(ten|twelve|fourteen) (two|three)\b/g,
    (all, before: string, id: string, feet: string, inches: string) => {
      if (!/\b(?:foot|feet|ft)\b|['′’]/i.test(figures[Number(id)]!.quote)) return all;
      const value = new Fraction(CODES[feet]! * 12 + CODES[inches]!);
      const figure = {
        value,
        unit: 'in',
        kind: 'length' as const,
        sure: true,
        per: null,
        onCenter: false,
        doubt: null,
      };
      return `${before}{L${figures.push({ ...figure, quote: `${feet} ${inches}` }) - 1}}`;
    },
  );

/** Thicknesses in which gypsum board is sold, inches. */
const BOARD = ['3/8', '1/2', '5/8'];
const HUNG = /\b(?:hang(?:s|ing)?|hung|lid|ceilings?|mud(?:ding)?|tap(?:e|ing)|drywall(?:er|ers|ing)?|sheet ?rock)\b/;

/** "Hanging the lid, five eighths board": where board is hung it is drywall. */
const hungBoard: Mend = (words, figures) =>
  HUNG.test(words)
    ? words.replace(/\{L(\d+)\} board\b(?! (?:feet|foot|and batten|siding))/g, (all, id: string) =>
        BOARD.includes(figures[Number(id)]!.value.toFraction()) ? `{L${id}} drywall` : all,
      )
    : words;

/** Lumber is called by two such numbers. */
const NOMINAL = [2, 3, 4, 6, 8, 10, 12];
const SIDE = '\\{N(\\d+)\\}(?: \\{N(\\d+)\\})?((?: (?:wide|long|deep|across|high|tall))?)';
const PAIR = new RegExp(
  `${SIDE}( ?(?:x|by) ?)${SIDE}(?=[,.;]| (?:and|with|less|minus|take|off|on|in|at|so|for)\\b|$)`,
  'g',
);
const ALONE = /\{N(\d+)\} \{N(\d+)\} (wide|long|deep|across|high|tall)\b/g;

/** "Fourteen three by eleven six", "ten six long": feet and inches without their words. */
const feetUnsaid: Mend = (words, figures) => {
  const value = (id: string | undefined) => (id === undefined ? null : figures[Number(id)]!.value);
  const inFeet = (id: string, inches: string | undefined) =>
    length(
      figures,
      id,
      value(id)!
        .mul(12)
        .add(value(inches) ?? 0),
      'in',
    );
  const stands = (feet: string, inches: string | undefined) =>
    value(feet)!.d === 1n &&
    value(feet)!.compare(2) >= 0 &&
    value(feet)!.compare(99) <= 0 &&
    (inches === undefined || value(inches)!.compare(12) < 0);
  return words
    .replace(PAIR, (all, a: string, ai: string, aw: string, by: string, b: string, bi: string, bw: string) => {
      const lumber =
        bi === undefined && NOMINAL.includes(value(b)!.valueOf()) && NOMINAL.includes(value(ai)?.valueOf() ?? 0);
      if ((!ai && !bi) || lumber || !stands(a, ai) || !stands(b, bi)) return all;
      return `{${inFeet(a, ai)}}${aw}${by}{${inFeet(b, bi)}}${bw}`;
    })
    .replace(ALONE, (all, a: string, ai: string, way: string) => (stands(a, ai) ? `{${inFeet(a, ai)}} ${way}` : all));
};

/** "Three ten wide", "by six ten": what is heard as 310 are feet and inches where it is a side. */
const feetRunOn: Mend = (words, figures) =>
  words.replace(
    /(?<=\b(?:x|by) )\{N(\d+)\}|\{N(\d+)\}(?= (?:wide|long|deep|across|high|tall)\b| ?(?:x|by) ?\{)/g,
    (all, after: string | undefined, before: string | undefined) => {
      const id = Number(after ?? before);
      const figure = figures[id]!;
      if (!/^[a-z]+ (?:ten|eleven)$/i.test(figure.quote) || figure.value.compare(200) < 0) return all;
      const inches = figure.value.mod(100);
      figures[id] = { ...figure, value: figure.value.sub(inches).div(100) };
      return `{N${id}} {N${figures.push({ ...figure, value: inches }) - 1}}`;
    },
  );

const CENTERS: Readonly<Record<string, number>> = { twelves: 12, sixteens: 16, 'twenty fours': 24, 'twenty-fours': 24 };

/** "Joists on 16s", "studs on sixteens": on center. */
const onCenters: Mend = (words, figures) =>
  (/\b(?:studs?|joists?|rafters?)\b/.test(words)
    ? words.replace(/, (sixteens|twelves|twenty[- ]fours)(?=[,.])/g, ', on $1')
    : words
  ).replace(
    /\b(on|at) (?:(12|16|24) ?s|(twelves|sixteens|twenty[- ]fours))\b/g,
    (_, on: string, digits: string | undefined, spelt: string | undefined) => {
      const value = new Fraction(digits ?? CENTERS[spelt!]!);
      const figure = { value, unit: 'in', kind: 'length' as const, sure: true, per: null, onCenter: true, doubt: null };
      return `${on} {L${figures.push({ ...figure, quote: digits ?? spelt! }) - 1}}`;
    },
  );

/** "By minus 8 ft", "negative two": a figure below nothing, which every reckoning refuses. */
const negatives: Mend = (words, figures) =>
  words.replace(
    /(?:(?<=\b(?:x|by|is|are|of|over|at) )minus|(?<=^[^{]*)\bminus(?= \{[LA])|\b(?:negative|minus(?= \{P| \{[NC]\d+\} (?:(?!doors?|windows?|openings?)[a-z]+ )?at \{))) (?=\{[A-Z](\d+)\})/g,
    (_, id: string) => {
      figures[Number(id)] = { ...figures[Number(id)]!, value: figures[Number(id)]!.value.neg() };
      return '';
    },
  );

/** "Six hundred by three hundreds": a hundred each, in the plural. */
const hundreds: Mend = (words, figures) =>
  words.replace(/\{N(\d+)\} hundreds\b/g, (_, id: string) => {
    figures[Number(id)] = { ...figures[Number(id)]!, value: figures[Number(id)]!.value.mul(100) };
    return `{N${id}}`;
  });

/** "8 tubes, 12 inch, 3 ft deep": forms for footings, which are counted, and no tubes of caulk. */
const footingTubes: Mend = (words, figures) =>
  /\bdeep\b/.test(words) && !/\b(?:caulk|sealant|silicone|adhesive)\b/.test(words)
    ? words.replace(/\{K(\d+)\}/g, (all, id: string) => {
        const figure = figures[Number(id)]!;
        if (figure.unit !== 'tube') return all;
        figures[Number(id)] = { ...figure, unit: null, kind: null, sure: false };
        return `{N${id}} tubes`;
      })
    : words;

/** In the order in which they are put right. */
const MENDS: readonly Mend[] = [
  ...PLACE_MENDS,
  ...EARLY_MENDS,
  negatives,
  hundreds,
  footingTubes,
  wholePoints,
  points,
  halfSquare,
  pounds,
  footAndHalf,
  besideFeet,
  placesBesideFeet,
  codeBesideFeet,
  hungBoard,
  feetRunOn,
  feetUnsaid,
  onCenters,
  ...SIZE_MENDS,
  ...TAKEN_BACK_MENDS,
];

export const puttingRight: Mend = (words, figures) => MENDS.reduce((said, mend) => mend(said, figures), words);
