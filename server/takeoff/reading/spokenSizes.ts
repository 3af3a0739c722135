import Fraction from 'fraction.js';
import type { Mend } from './mend.ts';
import type { Figure } from './said.ts';
import { feetOfTile, partsOfInch, UNIT_MENDS } from './spokenUnits.ts';

/** "Five quarter by six", `5/4x6`: lumber's own name for 1-1/4 in. */
const fiveQuarter: Mend = (words, figures) =>
  words.replace(/\b(?:five[- ]quarters?|5\/4) ?(?:x|by) ?(?=\{N\d+\})/g, () => {
    const value = new Fraction(5, 4);
    const figure = { value, unit: null, kind: null, sure: false, per: null, onCenter: false, doubt: null };
    return `{N${figures.push({ ...figure, quote: '5/4' }) - 1}} x `;
  });

/** "Sixty plus thirty plus thirty inches": lengths added up, the unit said once. */
const addedUp: Mend = (words, figures) =>
  words.replace(/\{[NL]\d+\}(?: plus \{[NL]\d+\})+/g, (all) => {
    const ids = [...all.matchAll(/\{[NL](\d+)\}/g)].map(([, id]) => Number(id));
    const units = new Set(ids.flatMap((id) => (figures[id]!.sure ? [figures[id]!.unit] : [])));
    const [unit] = units;
    if (units.size !== 1 || !unit || ids.every((id) => figures[id]!.sure)) return all;
    for (const id of ids) figures[id] = measured(figures[id]!, unit);
    return ids.map((id) => `{L${id}}`).join(' and ');
  });

const measured = (figure: Figure, unit: string): Figure =>
  figure.sure ? figure : { ...figure, unit, kind: 'length', sure: true };

const TELLS_INCHES = /\b(?:inch|inches|in)\b|["″”]/i;

/** "14'6 by 12": inches right behind the feet mark; a bare side beside them is feet. */
const feetMark: Mend = (words, figures) =>
  words.replace(
    /\{L(\d+)\} \{N(\d+)\}( ?(?:x|by) ?)\{([LN])(\d+)\}/g,
    (all, id: string, more: string, by: string, kind: string, other: string) => {
      const [feet, inches, side] = [id, more, other].map((k) => figures[Number(k)]!);
      if (!/['′’]$/.test(feet!.quote) || inches!.value.d !== 1n || inches!.value.compare(12) >= 0) return all;
      figures[Number(id)] = { ...feet!, value: feet!.value.mul(12).add(inches!.value), unit: 'in' };
      if (kind === 'N') figures[Number(other)] = measured(side!, 'ft');
      return `{L${id}}${by}{L${other}}`;
    },
  );

/** "13 by 11-6": beside feet and inches written with a dash, a bare whole side is feet. */
const besideFeetInches: Mend = (words, figures) =>
  words.replace(/\{([NL])(\d+)\} ?(?:x|by) ?\{([NL])(\d+)\}/g, (all, kindA, a: string, kindB, b: string) => {
    const [told, bare] = kindA === 'L' && kindB === 'N' ? [a, b] : kindA === 'N' && kindB === 'L' ? [b, a] : [];
    const [feet, side] = [figures[Number(told)], figures[Number(bare)]];
    const dashed = feet?.unit === 'in' && /^\d+ ?[-–] ?\d+$/.test(feet.quote) && feet.value.compare(48) >= 0;
    if (!dashed || side!.value.d !== 1n || side!.value.compare(4) < 0 || side!.value.compare(60) > 0) return all;
    figures[Number(bare)] = measured(side!, 'ft');
    return all.replace(`{N${bare}}`, `{L${bare}}`);
  });

/** "Den floor's thirteen and a half by eleven": a place so large, with no inches said, is told in feet. */
const placeInFeet: Mend = (words, figures) =>
  words.replace(
    /(\b(?:floor|room|bedroom|kitchen|den|hall|bath(?:room)?|deck|ceiling|patio|garage)(?:'s| is| runs| measures)* |(?<!\b(?:tiles?|bricks?|pavers?|blocks?|boards?|sheets?)\b[^.{]{0,40})\b(?:it|she|that)(?:'s| is)(?: about| only| really)* )\{L(\d+)\}( ?(?:x|by) ?)\{L(\d+)\}/g,
    (all, place: string, a: string, by: string, b: string) => {
      const pair = [a, b].map((id) => figures[Number(id)]!);
      const bare = pair.every(
        (f) => f.unit === 'in' && !TELLS_INCHES.test(f.quote) && !/['′’]|\b(?:foot|feet|ft)\b/i.test(f.quote),
      );
      if (!bare || pair.some((f) => f.value.compare(4) < 0 || f.value.compare(30) > 0)) return all;
      for (const id of [a, b]) figures[Number(id)] = { ...figures[Number(id)]!, unit: 'ft', sure: true };
      return `${place}{L${a}}${by}{L${b}}`;
    },
  );

const WHICH =
  '(?:the|other|main|back|front|big|bigger|small|smaller|little|first|second|third|last|next|left|right|long|short|upstairs|downstairs)';

/** "Back one 10 x 12": which, and no figure of the size. */
const pronounOne: Mend = (words, figures) =>
  words.replace(
    new RegExp(`\\b(${WHICH}) \\{N(\\d+)\\}(?= (?:is |at |was )?\\{[NL]\\d+\\} ?(?:x|by)\\b)`, 'g'),
    (all, which: string, id: string) => (figures[Number(id)]!.quote.toLowerCase() === 'one' ? `${which} one` : all),
  );

/** "Two sides three by eight each": sides of a place, which count nothing. */
const eachPair: Mend = (words, figures) =>
  words.replace(/\{C(\d+)\} (x|by) \{C(\d+)\}/g, (all, a: string, by: string, b: string) => {
    if ([a, b].some((id) => figures[Number(id)]!.unit !== 'each')) return all;
    for (const id of [a, b]) figures[Number(id)] = { ...figures[Number(id)]!, unit: null, kind: null, sure: false };
    return `{N${a}} ${by} {N${b}}`;
  });

/** "And one 6 by 6": how many, and no side. */
const oneMore: Mend = (words, figures) =>
  words.replace(
    /(\b(?:and|plus|then) |, )\{N(\d+)\}(?= \{[NL]\d+\} ?(?:x|by) ?\{[NL]\d+\})/g,
    (all, lead: string, id: string) =>
      figures[Number(id)]!.quote.toLowerCase() === 'one' ? `${lead}{N${id}} at` : all,
  );

/** "Bedroom two 3 x 3": which bedroom, and no side of it. */
const roomNumber: Mend = (words, figures) =>
  words.replace(
    /\b(bed ?room|room|unit|bath|closet|flat|apartment) \{N(\d+)\}(?= (?:is |at )?\{[NL]\d+\} ?(?:x|by)\b)/g,
    (_, room: string, id: string) => `${room} ${figures[Number(id)]!.quote.toLowerCase()}`,
  );

/** "7.2 m long by 900 high": a side that was read as no figure. */
const bareSide: Mend = (words, figures) =>
  words.replace(/\b(x|by) (\d{3,4})(?= (?:high|wide|long|deep|tall)\b)/g, (_, by: string, digits: string) => {
    const value = new Fraction(digits);
    const figure = { value, unit: null, kind: null, sure: false, per: null, onCenter: false, doubt: null };
    return `${by} {N${figures.push({ ...figure, quote: digits }) - 1}}`;
  });

const NUMBERS: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
  fourteen: 14,
  sixteen: 16,
  twenty: 20,
};
const SPELT = Object.keys(NUMBERS).join('|');
const RUN_ON = new RegExp(`^(${SPELT}) (${SPELT})[- ](?:foot|feet|ft)\\b`, 'i');

/** "One by four ten-foot boards": the section, then the length. */
const sectionThenLength: Mend = (words, figures) =>
  words.replace(
    /(?:\{([LN])(\d+)\}|\b(one|two)) ?(x|by) \{L(\d+)\}/g,
    (all, _kind, a: string | undefined, spelt: string | undefined, by: string, b: string) => {
      const figure = figures[Number(b)]!;
      const [, deep, long] = RUN_ON.exec(figure.quote) ?? [];
      if (!deep || figure.value.compare(100) < 0) return all;
      const plain = { ...figure, unit: null, kind: null, sure: false };
      if (a) figures[Number(a)] = { ...figures[Number(a)]!, unit: null, kind: null, sure: false };
      const thick = a ?? String(figures.push({ ...plain, value: new Fraction(NUMBERS[spelt!] ?? 1) }) - 1);
      figures[Number(b)] = { ...figure, value: new Fraction(NUMBERS[long!.toLowerCase()]!) };
      return `{N${thick}} ${by} {N${figures.push({ ...plain, value: new Fraction(NUMBERS[deep.toLowerCase()]!) }) - 1}} {L${b}}`;
    },
  );

/** "13 feet 2 for 11 feet 8": a room's two sides, as some say them. */
const sidesFor: Mend = (words, figures) =>
  words.replace(/\{L(\d+)\} (?:for|on) \{L(\d+)\}/g, (all, a: string, b: string) => {
    const told = [a, b].map((id) => figures[Number(id)]!);
    return told.every((f) => f.sure && /\b(?:feet|foot|ft|met(?:er|re)s?|m)\b/i.test(f.quote))
      ? `{L${a}} by {L${b}}`
      : all;
  });

/** "Wall height seven ten": feet and inches run together. */
const heightRunOn: Mend = (words, figures) =>
  words.replace(
    /(\b(?:height|ceilings?|walls?|length|width)(?: is| are| at| of)* )\{N(\d+)\}/g,
    (all, lead: string, id: string) => {
      const figure = figures[Number(id)]!;
      if (!/^[a-z]+ (?:ten|eleven)$/i.test(figure.quote) || figure.value.compare(200) < 0) return all;
      const inches = figure.value.mod(100);
      figures[Number(id)] = {
        ...figure,
        value: figure.value.sub(inches).div(100).mul(12).add(inches),
        unit: 'in',
        kind: 'length',
        sure: true,
      };
      return `${lead}{L${id}}`;
    },
  );

/** "Nine foot four one way and seven the other": the two sides of one place. */
const oneWay: Mend = (words) =>
  words.replace(
    /(\{[LN]\d+\}) one (?:way|direction)(?:,| and| by| then)* (\{[LN]\d+\}) the other(?: way| direction)?/g,
    '$1 by $2',
  );

/** "5-6 by 18", "one at 4-6": feet and inches with a dash, beside a side or behind "at". */
const dashedFeet: Mend = (words, figures) =>
  words.replace(
    /((?:\b(?:x|by|at|is|of) |'s )?)\{N(\d+)\}- ?\{N(\d+)\}((?: (?:x|by|long|wide|deep|high|tall)\b)?)/g,
    (all, lead: string, a: string, b: string, behind: string) => {
      const [feet, inches] = [figures[Number(a)]!, figures[Number(b)]!];
      const told = [feet, inches].every((f) => f.value.d === 1n && /^\d+$/.test(f.quote));
      if ((!lead && !behind) || !told || inches.value.compare(12) >= 0 || feet.value.compare(60) > 0) return all;
      figures[Number(a)] = {
        ...measured({ ...feet, sure: false }, 'in'),
        value: feet.value.mul(12).add(inches.value),
        quote: `${feet.quote}'${inches.quote}`,
      };
      return `${lead}{L${a}}${behind}`;
    },
  );

/** What stands before everything else. */
export const EARLY_MENDS: readonly Mend[] = [
  pronounOne,
  oneMore,
  roomNumber,
  bareSide,
  eachPair,
  sectionThenLength,
  sidesFor,
  heightRunOn,
  oneWay,
  dashedFeet,
  ...UNIT_MENDS,
];

/** In the order in which they are put right. */
export const SIZE_MENDS: readonly Mend[] = [
  fiveQuarter,
  feetMark,
  besideFeetInches,
  placeInFeet,
  partsOfInch,
  feetOfTile,
  addedUp,
];
