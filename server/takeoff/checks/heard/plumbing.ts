import type Fraction from 'fraction.js';
import { type Figure, type Said, saying } from '../../reading/said.ts';
import { drainSlope } from '../drain.ts';
import { dryerVent } from '../dryerVent.ts';
import { trapArm } from '../trapArm.ts';
import type { Verdict } from '../verdict.ts';
import { fahrenheit, hotWater, staticPressure } from '../water.ts';
import { countOf, HOW_MANY, inchesOf, matched, type Reader } from './reader.ts';

const SUPPLY =
  /\b(?:water pressure|hose bibb?|spigot|sillcock|static|house pressure|street pressure|pressure (?:at|on) the|incoming|at the meter|water main)\b/;

export const water: Reader = (said) => {
  const out: Verdict[] = [];
  const supply = SUPPLY.test(said.words) && !/\b(?:test|tested|testing|air|gas|held|holding)\b/.test(said.words);
  // "Seventy five pounds" of water pressure are pounds a square inch.
  // A gauge on it that reads 78 reads pounds too.
  const gauge = supply && /\bpressure\b/.test(said.words);
  const psi =
    said.figures.find((f) => f.unit === 'psi' || (supply && f.unit === 'lb')) ??
    (gauge
      ? said.figures.find((f) => f.unit === null && f.value.compare(20) >= 0 && f.value.compare(250) <= 0)
      : undefined);
  if (psi && supply) out.push(staticPressure(psi.value));
  const hot =
    said.figures.find((f) => f.kind === 'temperature' || (f.unit === 'deg' && /\bhot\b/.test(said.words))) ??
    // "Running 138" at a faucet: bare degrees.
    (/\b(?:hot|water)\b|\b(?:faucet|tap|shower|spout)\b[^.{]{0,40}\b(?:com(?:es|ing) out|runs|running|reads?|reading|hit(?:s|ting)?)\b/.test(
      said.words,
    )
      ? said.figures.find((f) => f.unit === null && f.value.compare(100) > 0 && f.value.compare(200) < 0)
      : undefined);
  if (hot && /\b(?:tub|shower|tap|faucet|hot water|sink|lav)\b/.test(said.words) && !/\bheater\b/.test(said.words))
    out.push(hotWater(hot.unit === 'C' ? fahrenheit(hot.value) : hot.value));
  return out;
};

const NINETIES = saying(`${HOW_MANY}(?:of )?(?:90 ?s|90 degree (?:elbows?|bends?)|nineties|elbows?|bends?|ells?)\\b`);
const FORTY_FIVES = saying(
  `${HOW_MANY}(?:of )?(?:45 ?s\\b|{[NX](\\d+)}(?: (?:elbows?|bends?|degrees?))?|forty[- ]fives?)`,
);

/** Bends of 45 degrees: "two forty fives", "a 45 degree elbow". */
function fortyFives(said: Said): number {
  const match = FORTY_FIVES.exec(said.words);
  if (!match) return 0;
  const angle = match[3] === undefined ? 45 : said.figures[Number(match[3])]!.value.valueOf();
  return angle === 45 ? (countOf(said, match[1], match[2]) ?? 0) : 0;
}

/** Feet of duct, but not feet still to buy. */
const DUCT = saying('(?<!\\b(?:need|buy|get|bring|grab|want|order) (?:another |about )?)<L>');

export const dryers: Reader = (said) => {
  if (!/\bdryer\b/.test(said.words) || !/\b(?:vent|duct|run)\b/.test(said.words)) return [];
  const match = DUCT.exec(said.words);
  const run = match && said.figures[Number(match[1])]!;
  if (run?.unit !== 'ft') return [];
  const bends = NINETIES.exec(said.words);
  const fives = fortyFives(said);
  const nineties = bends ? countOf(said, bends[1], bends[2]) : null;
  const none = /\b(?:straight|no (?:elbows|bends|nineties))\b/.test(said.words);
  return [dryerVent(run.value, nineties ?? (none || fives > 0 ? 0 : null), fives)];
};

const RUN = [
  saying(
    '(?:<LN> )?(?:drain|waste|sewer)\\b[^.]{0,30}?<L>[^.{]{0,30}?\\b(?:drops?|falls?|fall of|drop of|dropped)\\b[^.{]{0,12}<LN>',
  ),
  saying(
    '(?:<LN> )?(?:drain|waste|sewer)\\b[^.{]{0,24}\\b(?:drops?|falls?|dropped|fall|fall of)\\b[^.{]{0,8}<LN> (?:in|over|across|on)\\b[^.{]{0,8}<L>',
  ),
  saying(
    '(?:<LN> )?(?:drain|waste|sewer|line)\\b[^.{]{0,48}<LN>(?: (?:inch|inches|in))? (?:of )?(?:fall|drop|pitch|slope) (?:in|over|across|on)\\b[^.{]{0,8}<L>',
  ),
];
/** "Inch and a half drain is 14 foot 6 long, got 3 1/2 inches of fall on it". */
const FALL_BEHIND = saying(
  '(?:<LN> )?(?:drain|waste|sewer)\\b[^.{]{0,30}<L>[^.{]{0,20}<LN>(?: (?:inch|inches|in))? (?:of )?(?:fall|drop|pitch|slope)\\b',
);
/** "Two inches of pitch on the 3 inch line, goes 14 feet". */
const FALL_AHEAD = saying(
  '<LN>(?: (?:inch|inches|in))? of (?:fall|drop|pitch|slope)\\b[^.]{0,40}?<LN>(?: inch)? (?:drain|waste|sewer|line|pipe)\\b[^.{]{0,30}<L>',
);
const PIPES = saying(
  "<LN>(?: inch)?(?: (?!of\\b|to\\b|from\\b)[a-z]+)? (?:pipe|pvc|abs|drain|waste|line)\\b|\\b(?:drain|waste|line|sewer)\\b(?: (?:in|at|from|under|for) (?:the |this )?[a-z]+(?: [a-z]+)?)?(?:'s|,| is| of)?(?:,? (?:it's|that's|which is))? <L>(?:,| runs)",
  'g',
);

/** Nominal inches of a pipe; a length in feet is no size, and a large one would loosen the limit. */
function pipeSize(figure: Figure | undefined): Fraction | null {
  const inches = figure && (figure.unit === null || figure.unit === 'in') ? figure.value : null;
  return inches && inches.compare(12) <= 0 ? inches : null;
}

const sizeIn = (said: Said): Fraction | null =>
  [...said.words.matchAll(PIPES)]
    .map((match) => pipeSize(said.figures[Number(match[1] ?? match[2])]))
    .find((size) => size !== null) ?? null;

/** Feet of a drain's run. A figure of a foot or two is the pipe's size: then the run is what was said in feet. */
function runFeet(said: Said, figure: Figure | undefined): Fraction | null {
  const inches = inchesOf(figure);
  if (inches && inches.compare(24) > 0) return inches.div(12);
  const run = said.figures.find((f) => f !== figure && (f.unit === 'ft' || f.unit === 'm'));
  return inchesOf(run)?.div(12) ?? null;
}

/** What stands for a pipe's size: `pipe of 2 inch`, "2 inch drain". */
const SIZED = saying(
  "<LN>(?: inch)?(?: (?!of\\b|to\\b|from\\b)[a-z]+)? (?:pipe|pvc|abs|drain|waste|line|sewer)\\b|\\b(?:pipe|drain|waste|line|sewer|arm)(?: is| of|'s|,)*(?: a| of)? <LN>",
  'g',
);
const FALLS = /\b(?:slope|pitch|fall|falls|drop|drops|down|lower|grade)\b/;

/** One length in feet is the run, and the one length in inches that is not the pipe's size is what it falls. */
function byElimination(said: Said): { size: Fraction | null; run: Fraction; fall: Fraction } | null {
  if (!FALLS.test(said.words)) return null;
  const sizes = [...said.words.matchAll(SIZED)].map((m) => Number(m[1] ?? m[2]));
  const lengths = said.figures.map((figure, id) => ({ id, figure, inches: inchesOf(figure) }));
  const long = lengths.filter(
    ({ figure, inches }) => figure.kind === 'length' && figure.sure && inches!.compare(60) >= 0,
  );
  const short = lengths.filter(
    ({ id, figure, inches }) =>
      figure.kind === 'length' && figure.sure && inches!.compare(24) < 0 && !sizes.includes(id),
  );
  const others = lengths.filter(({ figure }) => figure.kind === 'length').length;
  if (long.length !== 1 || short.length !== 1 || others > 3) return null;
  const size = sizes.map((id) => pipeSize(said.figures[id])).find((s) => s !== null) ?? null;
  return { size, run: long[0]!.inches!.div(12), fall: short[0]!.inches! };
}

export const drains: Reader = (said) => {
  if (
    !/\b(?:drain|waste|sewer|trap arm)\b|\bline\b.*\b(?:main|stack|septic)\b|\bline\b.*\b(?:drops?|falls?|pitch(?:ed)?|sloped?)\b/.test(
      said.words,
    )
  )
    return [];
  const [runFirst, ...fallFirst] = RUN.map((pattern) => pattern.exec(said.words));
  const first = runFirst ?? FALL_BEHIND.exec(said.words);
  const second = fallFirst.find((match) => match !== null);
  const size = (id: string | undefined) =>
    pipeSize(id === undefined ? undefined : said.figures[Number(id)]) ?? sizeIn(said);
  const feet = (id: string | undefined) => runFeet(said, said.figures[Number(id)]);
  const fall = (id: string | undefined) => inchesOf(said.figures[Number(id)]);
  if (first) return [drainSlope({ size: size(first[1]), run: feet(first[2]), fall: fall(first[3]) })];
  if (second) return [drainSlope({ size: size(second[1]), run: feet(second[3]), fall: fall(second[2]) })];
  const ahead = FALL_AHEAD.exec(said.words);
  const by = ahead ? null : byElimination(said);
  if (by) return [drainSlope(by)];
  if (ahead) return [drainSlope({ size: size(ahead[2]), run: feet(ahead[3]), fall: fall(ahead[1]) })];
  if (/\b(?:shower pan|pan|patio|slab|apron)\b/.test(said.words)) return [];
  const slope = said.figures.find((f) => f.unit === 'in/ft');
  if (slope) return [drainSlope({ size: sizeIn(said), run: null, fall: null, slope: slope.value })];
  const asked =
    /\b(?:pitch(?:ed)?|slope[ds]?|fall)\b/.test(said.words) &&
    /\b(?:enough|ok|okay|right|is the|does the)\b/.test(said.words);
  const run = said.figures.find((f) => f.unit === 'ft')?.value ?? null;
  return asked ? [drainSlope({ size: sizeIn(said), run, fall: null })] : [];
};

const ARM = saying(
  '{L(\\d+)}[^.{]{0,14}\\b(?:weir|trap)\\b(?: over)? to (?:the )?vent\\b|\\btrap arm\\b[^.{]{0,30}{L(\\d+)}|\\bvent\\b[^.{]{0,16}{L(\\d+)} (?:from|off|past|down ?stream of)[^.{]{0,8}\\btrap\\b|\\b(?:weir|trap)\\b[^.{]{0,30}{L(\\d+)}[^.{]{0,16}\\b(?:before|to|until|till) (?:it |(?:it )?(?:hits|gets to|reaches) )?(?:the )?vent\\b|\\btrap to (?:the )?vent\\b[^.{]{0,10}{L(\\d+)}',
);
const ARM_PIPE = saying(
  "<L>(?: of)? (?:inch )?(?:pipe|pvc|abs|trap arm|arm|trap)\\b|\\b(?:trap |sink |tub |lav )?arm(?:'s| is)(?: an?)? <L>|\\bof <L>",
);

export const trapArms: Reader = (said) => {
  const length = matched(said, ARM);
  return length && length.compare(12) >= 0 ? [trapArm(length.div(12), matched(said, ARM_PIPE))] : [];
};
