import Fraction from 'fraction.js';
import { figureAt, type Said, saying } from './said.ts';

/** Words of a percentage that is no waste: a meter's reading, a price, a grade. */
const NO_WASTE =
  /^ ?(?:moisture|humidity|mc\b|rh\b|off\b|discount|down\b|grade|slope|done\b|of the\b|tax|deposit|solids)/;
const METER = /\b(?:reading|reads|read|moisture|humidity|meter|down to|under|below|plate(?: is|'s)?)\b[a-z ,']{0,20}$/;

/** "10 % on board only", "10 % over on the sealant": the goods that a waste was said of; null where it names none. */
export const wasteOf = (words: string): string | null =>
  saying(
    '<P>(?: (?:over|extra|waste|more))? on (?:the )?([a-z]+)(?: only|(?=[.,;]|$| (?:then|but|so|cause|because|no)\\b))',
  ).exec(words)?.[2] ?? null;

const ORDINALS = ['half', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
const TENTHS: Readonly<Record<string, number>> = { five: 5, six: 6, eight: 8, ten: 10, twelve: 12, twenty: 20 };
const LOST = '(?:waste|cuts?|extra|lost|loss|breakage|overlaps?|laps|compaction|settling|spare|scrap|for)';
/** "Add a fifth for compaction", "one in ten lost to cuts". */
const PART_LOST = new RegExp(
  `\\b(?:add|plus|allow|figure|lose|order|throw (?:on|in))(?: on)? (?:an?|one|another) (${ORDINALS.slice(2).join('|')}) (?:more |extra )?${LOST}\\b|\\bone in (${Object.keys(TENTHS).join('|')}) (?:[a-z]+ ){0,2}${LOST}\\b`,
);

/** The same, where the part was heard as a figure. */
const PART_FIGURE = saying(
  `\\b(?:add|plus|allow|figure|lose|losing|order)(?: (?:about|on|maybe))* <LN>(?= (?:more |extra |to |for |in |on )?(?:the )?(?:${LOST}|lapping|cutting|overlap))`,
  'g',
);

/** Waste as said; zero for "no waste", null where nothing was said. */
export function wasteIn(said: Said, used: Set<number>): Fraction | null {
  const { words } = said;
  const kind = '(?:waste|extra|overage|spoilage|cuts|breakage|overlap|laps|compaction|settling|spare|scrap|shrinkage)';
  const patterns = [
    `<PN>,? (?:for |in |of )?(?:the )?(?:(?!no |zero |without )[a-z]+ )?${kind}`,
    '<P>',
    `${kind}(?: factor)?(?: of| at| is|:)? (?:about )?<PN>(?! (?:of|x|by|ft))`,
    '<P> (?:on top|over|more)',
  ];
  for (const pattern of patterns)
    for (const m of words.matchAll(saying(pattern, 'g'))) {
      const figure = figureAt(said, m[1]);
      const [before, after] = [words.slice(0, m.index), words.slice(m.index + m[0].length)];
      const percent = figure.unit === '%';
      if (!percent && (figure.unit !== null || !/waste/.test(m[0]) || figure.value.compare(1) <= 0)) continue;
      if (pattern === '<P>' && (NO_WASTE.test(after) || METER.test(before))) continue;
      used.add(Number(m[1]));
      return figure.value.div(100);
    }
  for (const m of words.matchAll(PART_FIGURE)) {
    const figure = figureAt(said, m[1]);
    if (used.has(Number(m[1])) || !/^(?:an?|one) [a-z]+th$/i.test(figure.quote) || figure.value.n !== 1n) continue;
    used.add(Number(m[1]));
    return new Fraction(1, figure.value.d);
  }
  const part = PART_LOST.exec(words);
  if (part) return new Fraction(1, part[1] ? ORDINALS.indexOf(part[1]) + 2 : TENTHS[part[2]!]!);
  return /\b(?:no|zero|without|skip the|don't (?:add|figure)(?: any)?|not? (?:any )?) ?waste\b/.test(words)
    ? new Fraction(0)
    : null;
}
