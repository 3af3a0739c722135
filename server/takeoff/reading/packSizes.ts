import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { metricUnit } from './lengths.ts';
import { PACKS, packUnit, STICK_FEET } from './packWords.ts';
import type { PacksTold } from './ratios.ts';
import { type Figure, figureAt, type Said, saying } from './said.ts';

/** Goods in sheets, by their own names. */
const BOARDS = 'cdx|plasterboards?|gib|ply(?:wood)?|osb|villaboard|cement boards?|backer boards?|boards?|sheeting';

/** A side of a sheet or roll in feet, as a bare one is. */
const feet = (f: Figure) => (f.sure && f.kind === 'length' ? convert(f.value, f.unit!, 'ft')! : f.value);

/** Bare sides of a roll beside metres are metres: "rolls are 10.05 by 0.53". */
const rollSide = (said: Said, f: Figure) =>
  f.unit === null && metricUnit(said.figures) === 'm' ? convert(f.value, 'm', 'ft')! : feet(f);

/** "Half inch 4x8": a sheet's thickness right before its sides. */
function besideThickness(said: Said, at: number): boolean {
  const m = saying('<L>(?: inch)?(?: thick)? $').exec(said.words.slice(0, at));
  return m !== null && figureAt(said, m[1]).unit === 'in' && figureAt(said, m[1]).value.compare(1) < 0;
}

/** "Fifty foot rolls", "2.5 L tins", "60 lb bags, .45 cu ft each", "4x8 sheets", "in sixteens". */
export function packsOf(said: Said, out: PacksTold): void {
  const { words } = said;
  const add = (
    match: RegExpMatchArray,
    value: Fraction,
    unit: string | null,
    per: string,
    ids: (string | undefined)[],
  ) => {
    out.ratios.push({ value, unit, per, at: match.index ?? 0 });
    for (const id of ids)
      if (id) {
        out.used.add(Number(id));
        out.sold.add(Number(id));
      }
  };
  for (const m of words.matchAll(saying(`<W>[- ](${PACKS})\\b`, 'g'))) {
    const weight = figureAt(said, m[1]);
    out.packSize = `${weight.value.toString()} ${weight.unit}`;
    out.used.add(Number(m[1]));
    const rest = words.slice((m.index ?? 0) + m[0].length);
    const yields = saying(
      '^[ ,]*(?:at |yields? |yielding |is |are |makes? |do |does |gives? |gets? you |covers? |about |they |it |which |that )*(?:about )?<VNA>',
    ).exec(rest);
    if (yields) {
      const figure = figureAt(said, yields[1]);
      const bare = figure.unit === null;
      if (!bare || figure.value.compare(2) < 0)
        add(m, figure.value, bare ? 'cu ft' : figure.unit, packUnit(m[2]!), [yields[1]]);
    }
  }
  // "The bag is of 80 pounds".
  for (const m of words.matchAll(saying('\\b(?:bags?|sacks?|pails?)(?: (?:is|are|of|at|weighs?))+ <W>', 'g'))) {
    if (out.used.has(Number(m[1]))) continue;
    out.packSize = `${figureAt(said, m[1]).value.toString()} ${figureAt(said, m[1]).unit}`;
    out.used.add(Number(m[1]));
  }
  // "Eighty pounders".
  for (const m of words.matchAll(saying('<NW>[- ]?pounders\\b', 'g'))) {
    out.packSize = `${figureAt(said, m[1]).value.toString()} lb`;
    out.used.add(Number(m[1]));
  }
  for (const m of words.matchAll(saying(`<AVL>[- ](?:of )?(${PACKS})\\b(?! to\\b)`, 'g'))) {
    if (out.used.has(Number(m[1]))) continue;
    const figure = figureAt(said, m[1]);
    // Ten foot pieces are sticks.
    const per = figure.kind === 'length' && /^pieces?$|^pcs?$/.test(m[2]!) ? 'stick' : packUnit(m[2]!);
    if (per === figure.unit || per === 'square' || per === 'each') continue;
    // "Two twelve foot pieces" are counted: that is an order, not how they are sold.
    if (!figure.sure || /(?:\{[NC]\d+\}|\banother|\bone) $/.test(words.slice(0, m.index))) continue;
    add(m, figure.value, figure.unit, per, [m[1]]);
    if (figure.kind === 'volume') out.packSize ??= `${figure.value.toString()} ${figure.unit}`;
  }
  for (const m of words.matchAll(
    saying(
      '(?:\\b(sheets?|panels?)(?: are| come| is)?(?: in)? )?(?<!\\} ?x )<LNK> ?(?:x|by) ?<LNK>(?: (sheets?|panels?|boards|s)\\b)?(?! ?x)',
      'g',
    ),
  )) {
    const [a, b] = [figureAt(said, m[2]), figureAt(said, m[3])];
    // "Four by twelves": the plural is of sheets.
    const plural = m[4] !== undefined || /(?:fours|fives|sixes|eights|nines|tens|twelves|sixteens)$/i.test(b.quote);
    const sheets =
      b.unit === 'sheet' ||
      /^(?:sheet|panel)/.test(m[1] ?? m[4] ?? '') ||
      // "4x8 for 40x7.5": the sheets, and the place that they go to.
      saying('^ (?:for|over|on) (?:an? |the )?\\{[LN]\\d+\\} ?(?:x|by) ?\\{').test(
        words.slice((m.index ?? 0) + m[0].length),
      ) ||
      (plural && a.value.compare(3) >= 0) ||
      besideThickness(said, m.index ?? 0);
    const [w, l] = [feet(a), feet(b)];
    const stocked = /^(?:2|3|4|4\.5|5)x(?:4|5|6|8|9|10|12|14|16)$/.test(`${w.toString()}x${l.toString()}`);
    if (!sheets || !stocked) continue;
    add(m, w.mul(l), 'sq ft', 'sheet', [m[2], m[3]]);
    out.packSize = `${w.toString()}x${l.toString()}`;
  }
  // "Three by five quarter inch backer board": bare sides, how thick, and the board.
  for (const m of words.matchAll(
    saying(
      `<N> ?(?:x|by) ?<N>,? <L>(?: inch)?(?: thick)? (?:[a-z]+ )?(?:${BOARDS}|durock|drywall|sheet ?rock|sheathing)\\b`,
      'g',
    ),
  )) {
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const thin = figureAt(said, m[3]);
    const stocked = /^(?:3|4|4.5|5)x(?:4|5|6|8|9|10|12|14|16)$/.test(`${a.value.toString()}x${b.value.toString()}`);
    if (!stocked || out.used.has(Number(m[1])) || thin.unit !== 'in' || thin.value.compare(2) > 0) continue;
    add(m, a.value.mul(b.value), 'sq ft', 'sheet', [m[1], m[2], m[3]]);
    out.packSize ??= `${a.value.toString()}x${b.value.toString()}`;
  }
  // "Twelve hundred by twenty four hundred plasterboard": bare sides of a metre and about are millimetres.
  for (const m of words.matchAll(
    saying(`<NL> ?(?:x|by) ?<NL>,? (?:mil )?(?:(?!tiles?)[a-z]+ )?(?:sheets?|panels?|${BOARDS})\\b`, 'g'),
  )) {
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    if (![a, b].every((f) => f.unit === null || f.unit === 'mm')) continue;
    const [w, l] = [a.value.valueOf(), b.value.valueOf()];
    if (w < 900 || w > 1250 || l < 1200 || l > 3600) continue;
    add(m, a.value.mul(b.value).div(1_000_000), 'sq m', 'sheet', [m[1], m[2]]);
    out.packSize = `${w}x${l}`;
  }
  // "Boards are 2.4 x 1.2" where the place is told in metres.
  for (const m of words.matchAll(
    saying(`\\b(?:sheets?|panels?|${BOARDS})(?: (?:are|is|come|comes|in|at))* <NL> ?(?:x|by) ?<NL>`, 'g'),
  )) {
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const metres = [a, b].every((f) => (f.unit === null || f.unit === 'm') && f.value.compare(4) < 0);
    if (metricUnit(said.figures) !== 'm' || !metres || out.used.has(Number(m[1]))) continue;
    add(m, a.value.mul(b.value), 'sq m', 'sheet', [m[1], m[2]]);
    out.packSize = `${a.value.toString()}x${b.value.toString()} m`;
  }
  // "9x100 rolls", "rolls are ten by a hundred", in feet.
  for (const m of words.matchAll(
    saying(
      "(\\brolls?(?:(?:'s)? (?:are |is |come |comes |in |at )*|(?: (?:are|is|come|comes|in|at))+ )(?:\\{L\\d+\\},? )?)?<LNK>(?: wide)? ?(?:x|by) ?<LNK>(?: (?:foot|ft))?( rolls?\\b)?",
      'g',
    ),
  )) {
    const [a, b] = [figureAt(said, m[2]), figureAt(said, m[3])];
    if ((m[1] || m[4] || b.unit === 'roll') && !out.used.has(Number(m[2]))) {
      const [one, two] = [a, b].map((f) => rollSide(said, f)) as [Fraction, Fraction];
      out.roll = one.compare(two) <= 0 ? { width: one, length: two } : { width: two, length: one };
      add(m, one.mul(two), 'sq ft', 'roll', [m[2], m[3]]);
    }
  }
  // "Rolls are 20 inches wide, 33 foot long".
  for (const m of words.matchAll(
    saying("\\brolls?(?:'s| are| is| come| comes)?(?: in| at)? <L>(?: wide)?(?:,| by| and| x)* <L>(?: long)?", 'g'),
  )) {
    const sides = [m[1], m[2]].map((id) => convert(figureAt(said, id).value, figureAt(said, id).unit!, 'ft'));
    if (out.used.has(Number(m[1])) || !sides[0] || !sides[1]) continue;
    const [one, two] = sides as [Fraction, Fraction];
    out.roll = one.compare(two) <= 0 ? { width: one, length: two } : { width: two, length: one };
    add(m, one.mul(two), 'sq ft', 'roll', [m[1], m[2]]);
  }
  // "Strip vent's eight foot long": how long one piece is.
  for (const m of words.matchAll(
    saying(
      "\\b(?:vent|edge|trim|gutter|base|baseboard|casing|crown|moulding|molding|pipe|conduit|rail|edging|flashing|coving|track|channel|skirting|bead)s?(?:'s| is| are| come| comes)(?: in| all)? <L>(?: long)(?! (?:wall|run))",
      'g',
    ),
  ))
    if (!out.used.has(Number(m[1]))) add(m, figureAt(said, m[1]).value, figureAt(said, m[1]).unit, 'stick', [m[1]]);
  // "Subfloor 14x18, three quarter, 4x8": the usual sheet beside a place.
  if (new RegExp(`\\b(?:${BOARDS}|subfloor|drywall|sheet ?rock|sheathing|rock)\\b`).test(words)) {
    const pairs = [...words.matchAll(saying('<LN> ?(?:x|by) ?<LN>', 'g'))].filter((m) => !out.used.has(Number(m[1])));
    const usual = pairs.filter(
      (m) =>
        [m[1], m[2]].every((id) => figureAt(said, id).unit === null) &&
        /^(?:4x8|4x9|4x10|4x12)$/.test(
          `${figureAt(said, m[1]).value.toString()}x${figureAt(said, m[2]).value.toString()}`,
        ),
    );
    const beside = usual[0] && new RegExp(`\\b(?:${BOARDS}),? $`).test(words.slice(0, usual[0].index));
    if (usual.length === 1 && (pairs.length > 1 || beside)) {
      const [m] = usual;
      add(m!, figureAt(said, m![1]).value.mul(figureAt(said, m![2]).value), 'sq ft', 'sheet', [m![1], m![2]]);
      out.packSize ??= `${figureAt(said, m![1]).value.toString()}x${figureAt(said, m![2]).value.toString()}`;
    }
  }
  // "I only buy fives": of paint.
  const fives = /\b(?:in|buy|buying|get|getting|comes? in|sold in) (?:the )?fives\b/.exec(words);
  if (fives && (/\bgal/.test(words) || said.figures.some((f) => f.unit === 'gal' || f.per === 'gal')))
    add(fives, new Fraction(5), 'gal', 'bucket', []);
  // "Eight footers".
  said.figures.forEach((figure, id) => {
    if (!/foot ?ers?$/.test(figure.quote.toLowerCase()) || figure.unit !== 'ft' || out.used.has(id)) return;
    const at = words.search(new RegExp(`\\{[A-Z]${id}\\}`));
    // "The rolls are fifty footers".
    const rolls = /\b(rolls?|coils?|spools?)(?: (?:are|is|come|comes|all|in|the))* $/.exec(words.slice(0, at))?.[1];
    // "A seven footer does one leg" says nothing new of how they come.
    if (!out.ratios.some((r) => r.per === 'stick' && r.value.equals(figure.value)))
      out.ratios.push({ value: figure.value, unit: 'ft', per: rolls ? packUnit(rolls) : 'stick', at });
    out.used.add(id);
  });
  const plurals =
    /(?:\b(?:in|come in|comes in|of|by) (?:the )?|, (?=[a-z]+(?:$|[.,])))(8 ?s|10 ?s|12 ?s|14 ?s|16 ?s|20 ?s|eights|tens|twelves|fourteens|sixteens|twenties)\b/g;
  for (const plural of words.matchAll(plurals))
    add(plural, new Fraction(STICK_FEET[plural[1]!] ?? Number.parseInt(plural[1]!, 10)), 'ft', 'stick', []);
}
