import Fraction from 'fraction.js';
import { show } from '../calculators/reckoned.ts';
import { metricUnit } from '../reading/lengths.ts';
import { STICK_FEET } from '../reading/packWords.ts';
import { readOnce } from '../reading/readOnce.ts';
import { type Figure, figureAt, lengthIn, type Said, saying } from '../reading/said.ts';
import { runsIn } from './along.ts';
import { companionsIn, isPlateStick, PANELS } from './companions.ts';
import { holesIn } from './holes.ts';
import { calledIn, claim, free, holds, isOthers, isThere, KINDS, type RowTold } from './row.ts';

const kindsIn = readOnce(({ words }) => KINDS.filter((k) => k.named.test(words)).map((k) => k.item));

/** Whether a note names pieces that stand in rows. */
export const namesRows = (said: Said): boolean => kindsIn(said).length > 0;

/** Reads every row that a note tells of. `standing`: kinds that earlier notes told of in the same area. */
export function rowsIn(said: Said, standing: readonly string[]): RowTold[] {
  const { words } = said;
  const named = kindsIn(said);
  // Holes are dug for the posts of the note, if it has any.
  const kinds = named.length === 0 ? standing.slice(-1) : named.length > 1 ? named.filter((k) => k !== 'pier') : named;
  const own = kinds.filter(
    (item) =>
      !(item === 'fence post' && kinds.length > 1 && /\b(?:between|clear)\b[^.]{0,20}\bposts?\b/.test(words)) &&
      // Two words for the same pieces of one rail.
      !(item === 'picket' && kinds.includes('baluster')),
  );
  return own.map((item) => rowIn(said, item, own));
}

function rowIn(said: Said, item: string, kinds: readonly string[]): RowTold {
  const { words } = said;
  const told: RowTold = {
    item,
    called: calledIn(words, item),
    spacing: null,
    runs: [],
    times: null,
    section: null,
    piece: null,
    width: null,
    gap: null,
    extra: null,
    there: isThere(words, item) || null,
    inset: null,
    noEnds:
      /\bnot? (?:one )?(?:at|on) (?:the |either |each )?ends?\b|\bends? (?:is|are) (?:there|in|up) already\b/.test(
        words,
      ) || null,
    corners: /\bcorners?\b|\bl[- ]shaped?\b/.test(words) || null,
    hangers: null,
    rails: null,
    railSize: null,
    treated: null,
    panels: null,
    plates: null,
    plateStick: null,
    hole: null,
    lessPost: null,
    eachHole:
      /\b(?:hole by hole|per hole|each hole|every hole|full bags? (?:in|per|a) )/.test(
        words.replace(
          /\bnot (?:hole by hole|per hole|each hole)|\b(?:tubes?|forms?|bases?|brackets?|anchors?)(?: [a-z]+){0,2} (?:for|in|to|at|down) (?:each|every) hole/g,
          '',
        ),
      ) || null,
    holes: null,
    used: new Set(),
  };
  if (holds(item)) {
    spacingIn(said, told, kinds);
    runsIn(said, told);
    return { ...told, used: new Set() };
  }
  sectionIn(said, told, kinds);
  holesIn(said, told);
  gapsIn(said, told);
  spacingIn(said, told, kinds);
  companionsIn(said, told, kinds);
  // Pieces side by side have no spacing: it is their posts' or joists'.
  if ((told.width || kinds.length > 1) && /picket|board|slat/.test(item)) told.spacing = null;
  runsIn(said, told);
  return told;
}

/** "2x4x8", "two by four eight footers", "4x4 posts", "2x8s, 12 ft long". */
function sectionIn(said: Said, told: RowTold, kinds: readonly string[]): void {
  const { words } = said;
  for (const m of words.matchAll(saying('<N> ?(?:x|by) ?<N>(?: ?s\\b)?(?: ?(?:x|by) ?<LN>|,? <L>)?', 'g'))) {
    const [a, b] = [figureAt(said, m[1]).value, figureAt(said, m[2]).value];
    if (!nominal(a, b) || [m[1], m[2]].some((id) => !free(told, id))) continue;
    if (RAILS_BEFORE.test(words.slice(0, m.index)) && told.item !== 'picket') {
      const long = m[3] || m[4] ? stickLength(figureAt(said, m[3] ?? m[4])) : null;
      told.railSize = [`${a.toFraction()}x${b.toString()}`, long && `${show(long.div(12))} ft`]
        .filter(Boolean)
        .join(' ');
      claim(told, m[1], m[2], m[3] ?? m[4]);
      continue;
    }
    if (isOthers(words.slice(m.index + m[0].length), told.item, kinds)) continue;
    // "Pickets are 1x6x6" beside posts: the section is of what was named last, or is named right behind it.
    if (!isOwn(words, m, told.item, kinds)) {
      claim(told, m[1], m[2], m[3]);
      continue;
    }
    told.section = `${a.toFraction()}x${b.toString()}`;
    claim(told, m[1], m[2]);
    const third = m[3] || m[4] ? figureAt(said, m[3] ?? m[4]) : null;
    if (third && !third.onCenter && stickLength(third)) {
      told.piece = stickLength(third);
      claim(told, m[3] ?? m[4]);
    }
    break;
  }
  const noun = KINDS.find((k) => k.item === told.item)!.named.source;
  const long =
    saying(`<L>(?: long)? (?:[a-z]+ )?(?:${noun}|sticks?\\b|lengths?\\b|lumber\\b)`).exec(words) ??
    saying(`(?:${noun})(?: (?:are|is|come in|at|all))* <L>(?: long)(?! (?:wall|run|fence))`).exec(words);
  if (!told.piece && long && free(told, long[1])) {
    told.piece = stickLength(figureAt(said, long[1]));
    if (told.piece) claim(told, long[1]);
  }
  said.figures.forEach((figure, id) => {
    if (told.piece || told.used.has(id) || !/foot ?ers?|footer/.test(figure.quote.toLowerCase())) return;
    if (told.item === 'stud' && isPlateStick(words, id)) return;
    if (kinds.length > 1 && lastNamed(words, kinds, id) !== told.item) return;
    told.piece = lengthIn(figure, 'in');
    told.used.add(id);
  });
  const plural = /\b(?:in|come in|comes in) (?:the )?(8|10|12|14|16|20) ?s\b/.exec(words);
  const spelt = /\b(?:in|come in|comes in) (eights|tens|twelves|fourteens|sixteens|twenties)\b/.exec(words);
  const feet = plural ? Number(plural[1]) : spelt ? STICK_FEET[spelt[1]!]! : null;
  if (!told.piece && feet) told.piece = new Fraction(feet * 12);
}

/** "Three rails per section, 2x4x8", "a top and a bottom rail each section two by four": the section is the rails'. */
const RAILS_BEFORE =
  /\brails?(?:,| are| is| in| come)?(?: (?:a|per|each|every|to a) (?:section|bay|side))?,?(?: (?:are|is|in|of|all))* $/;

function isOwn(words: string, m: RegExpMatchArray, item: string, kinds: readonly string[]): boolean {
  const behind = new RegExp(`^ (?:${KINDS.find((k) => k.item === item)!.named.source})`);
  return (
    kinds.length < 2 ||
    behind.test(words.slice(m.index! + m[0].length)) ||
    lastNamed(words, kinds, Number(m[1])) === item
  );
}

/** Of several kinds the one that is named last before a figure, else the first. */
function lastNamed(words: string, kinds: readonly string[], id: number): string {
  const before = words.slice(0, words.search(new RegExp(`\\{[A-Z]${id}\\}`)));
  const placed = kinds.map((item) => {
    const named = new RegExp(KINDS.find((k) => k.item === item)!.named.source, 'g');
    return { item, at: [...before.matchAll(named)].at(-1)?.index ?? -1 };
  });
  return placed.reduce((last, k) => (k.at > last.at ? k : last)).item;
}

/** Yards cut lumber to these feet; 92-5/8 in studs too. Common practice, no source. */
function stickLength(figure: Figure): Fraction | null {
  const inches = lengthIn(figure, 'in', 'ft');
  return inches && inches.compare(24) >= 0 && inches.compare(300) <= 0 ? inches : null;
}

const THICK = ['1', '1.25', '2', '4', '6', '8'];
const nominal = (a: Fraction, b: Fraction) =>
  THICK.includes(a.toString()) && [2, 3, 4, 6, 8, 10, 12].includes(b.valueOf()) && a.compare(b) <= 0;

/** "3-1/2 in pickets with a 2 in gap", "5-1/2 wide boards, 1/8 gap", "gap can't be over 4". */
function gapsIn(said: Said, told: RowTold): void {
  const { words } = said;
  // "Posts no more than 2.4 apart" stand at a spacing.
  if (!/baluster|picket|board|slat|batten/.test(told.item)) return;
  const most =
    saying(
      "\\b(?:gaps?|spac(?:e|ing|es)|openings?)(?: (?:can't|cannot|can not|can|may|shall|is|not|no|has|has to|got to|gotta|must|should|to|stay|be))* (?:be )?(?:over|more than|bigger than|under|less than|max(?:imum)?|past)(?: of)? <LN>",
    ).exec(words) ??
    saying(
      '\\b(?:no more than|not over|not more than|max(?:imum)?(?: of)?|under|less than|at most)(?: a)? <LN>(?: (?:clear|inch|in|max))* ?(?:gaps?|between|apart|clear|spac)',
    ).exec(words) ??
    saying('<LN> (?:max|maximum)(?: gap| space| between| clear)').exec(words);
  const plain =
    saying('<LN>(?: (?:inch|in|of a|clear))* (?:gaps?|space|spaced|between|reveal)\\b').exec(words) ??
    saying('\\bgaps?(?: (?:is|are|of|at|between|them))* (?:a )?<LN>').exec(words);
  if (
    /\b(?:no|without a|zero) gaps?\b(?! (?:may|can|shall|is|to|over|more|bigger|greater|wider))|\b(?:tight|butted|touching)\b/.test(
      words,
    )
  )
    told.gap = { width: new Fraction(0), most: false };
  const gap = most ?? plain;
  if (gap && free(told, gap[1])) {
    const bare = metricUnit(said.figures) === 'm' && figureAt(said, gap[1]).value.compare(10) < 0 ? 'm' : 'in';
    const width = lengthIn(figureAt(said, gap[1]), 'in', bare);
    if (width && width.compare(8) <= 0) {
      told.gap = { width, most: most !== null };
      claim(told, gap[1]);
    }
  }
  for (const pattern of WIDTHS)
    for (const m of words.matchAll(pattern)) {
      const width = free(told, m[1]) && told.item !== 'stud' ? lengthIn(figureAt(said, m[1]), 'in', 'in') : null;
      // "One board a row" counts it.
      const counted = figureAt(said, m[1]).unit === null && width?.equals(1);
      if (told.width || !width || counted || width.compare(12) > 0) continue;
      told.width = width;
      claim(told, m[1]);
    }
}

const WIDTHS = [
  saying(
    '<LN>(?: (?:inch|in|wide|square|round|iron|metal|steel|aluminum|cedar|wood|turned))*,? (?:wide )?(?:boards?|pickets?|palings?|balusters?|spindles?|slats?|decking)\\b',
    'g',
  ),
  saying(
    "\\b(?:boards?|pickets?|palings?|balusters?|spindles?|slats?)(?: (?:are|is|at|measure|all|they're|actual))*,? <LN>(?: (?:inches|inch|in))?(?: (?:wide|square|actual|across|no|tight)|,| with|\\.|$| and)",
    'g',
  ),
  saying('<LN>(?: (?:inches|inch|in))? (?:actual|real measure|finished|true)\\b', 'g'),
  saying('<LN>(?: (?:inches|inch|in))? wide(?=,? (?:and |with )*(?:an? )?\\{[A-Z]\\d+\\} (?:inch |in )?gap)', 'g'),
];

/** "At 400 centres" are millimetres, "at 1.8 centres" metres beside metres, "16 on center" inches. */
function centersUnit(said: Said, { value }: Figure): string {
  if (value.compare(100) >= 0) return 'mm';
  return value.compare(10) < 0 && metricUnit(said.figures) === 'm' ? 'm' : 'in';
}

/** "Sixteen on center", "a post every 8 ft", "2 ft apart". */
function spacingIn(said: Said, told: RowTold, kinds: readonly string[]): void {
  const { words } = said;
  const found: { at: number; id: number; length: Fraction }[] = [];
  const add = (at: number, id: number, bare: string) => {
    const figure = said.figures[id]!;
    // Centers of 16 are inches, whatever unit stood beside them.
    const inches = figure.onCenter && figure.unit === 'ft' && figure.value.compare(10) > 0;
    const metric = !figure.sure && /m$/.test(bare);
    const length = inches ? figure.value : lengthIn(metric ? { ...figure, unit: null } : figure, 'in', bare);
    // Pieces stand no nearer than that: it is a gap.
    if (length && (length.compare(2) > 0 || length.compare(0) <= 0)) found.push({ at, id, length });
  };
  said.figures.forEach((figure, id) => {
    if (figure.onCenter) add(words.search(new RegExp(`\\{[A-Z]${id}\\}`)), id, centersUnit(said, figure));
  });
  for (const pattern of [
    '\\b(?:every|each|spaced(?: at| out)?|spacing(?: of| is| at)?|centers (?:at|of)|no more than|at most)(?: about)? <LN>(?! ?(?:x|by|gap|between|clear|max gap))',
    '\\b(?:joists?|studs?|rafters?|\\} x \\{N\\d+\\} s|\\} by \\{N\\d+\\})(?: (?:are|is|go))? (?:at|on) {N(\\d+)}(?! ?(?:x|by|percent|%|feet|foot|ft)\\b)',
    '<LN>(?: (?:inch|in|foot|ft))? (?:apart|cent(?:er|re)s|spacing|oc|o\\.c\\.|on cent(?:er|re)s?)\\b',
    // A post stands between panels.
    ...(told.item === 'fence post' ? PANELS : []),
  ])
    for (const m of words.matchAll(saying(pattern, 'g'))) {
      const figure = figureAt(said, m[1]);
      const bare = metricUnit(said.figures) === 'm' ? 'm' : 'ft';
      if (free(told, m[1]))
        add(m.index, Number(m[1]), figure.value.compare(10) <= 0 ? bare : centersUnit(said, figure));
    }
  const inset = saying('<L> (?:in )?from (?:the |each |both |either )*ends?\\b').exec(words);
  if (inset && free(told, inset[1])) {
    told.inset = lengthIn(figureAt(said, inset[1]), 'in');
    claim(told, inset[1]);
  }
  if (found.length === 0) return;
  // Of several spacings each kind takes the one said nearest behind its name.
  const named = KINDS.find((k) => k.item === told.item)!.named.exec(words)?.index ?? 0;
  const nearest =
    kinds.length < 2 ? found[0]! : [...found].sort((a, b) => Math.abs(a.at - named) - Math.abs(b.at - named))[0]!;
  told.spacing = nearest.length;
  for (const { id } of found) told.used.add(id);
}
