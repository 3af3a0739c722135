import Fraction from 'fraction.js';
import type { Goods } from './goods.ts';
import type { Said } from './said.ts';
import type { Terms } from './terms.ts';
import { sentenceAt } from './wanted.ts';

/** Of several goods in a note each keeps the packs and coats said beside it; waste serves them all. */
export function ownTerms(said: Said, terms: Terms, goods: readonly Goods[], k: number): Terms {
  const owner = ({ at, per, unit }: { at: number; per?: string; unit?: string | null }) => {
    const fits = goods.filter(
      (g) => (per && !SMALL.test(g.item) && PACK_OF[per]?.test(g.item)) || (unit && MADE_OF[unit]?.test(g.item)),
    );
    const among = fits.length > 0 ? fits : goods;
    const before = [...among].sort((a, b) => nearest(b, at) - nearest(a, at))[0]!;
    return goods.indexOf(nearest(before, at) < 0 ? among[0]! : before);
  };
  const nearest = (g: Goods, at: number) =>
    g.mentions.findLast((m) => m <= at || (m <= at + OF && OF_THEM.test(said.words.slice(at, m)))) ?? -1;
  const ratios = terms.ratios.filter(
    (r) => (owner(r) === k || ofAll(said, r, goods, k)) && !(r.per === 'sheet' && NO_SHEETS.test(goods[k]!.item)),
  );
  const size = terms.packSize;
  const filled = / (?:gal|L|qt|cu ft|cu m)$/.test(size ?? '');
  const own = filled ? ratios.some((r) => `${r.value.toString()} ${r.unit}` === size) : ratios.length > 0;
  const sized = size !== null && k === packOwner(size, goods, own ? k : filled ? -1 : 0);
  const wasted = terms.wasteOf === null ? [] : goods.filter((g) => isCalled(g, terms.wasteOf!));
  return {
    ...terms,
    waste: wasteFree(said, goods[k]!, goods)
      ? new Fraction(0)
      : wasted.length === 0 || wasted.includes(goods[k]!)
        ? terms.waste
        : null,
    ratios,
    coats: terms.coats.filter((c) => owner(c) === k),
    packSize: sized ? size : null,
  };
}

/** "Gravel and sand, both come in half cubic foot bags": a pack said of two and more, what fills of fills. */
function ofAll({ words }: Said, { at }: { at: number }, goods: readonly Goods[], k: number): boolean {
  const m =
    /\b(both|all three|all(?: of (?:it|them))?)(?: of (?:those|these|them|it))?,? (?:come|comes|are|is|in|sold)\b[^.;{]{0,24}$/.exec(
      words.slice(0, at),
    );
  if (!m) return false;
  const before = goods.filter((g) => g.at < m.index && g.by === goods[k]!.by);
  return before.slice(m[1] === 'both' ? -2 : 0).includes(goods[k]!);
}

/** "Two coats of white", "one coat white", "three by five quarter inch backer board". */
const OF_THEM =
  /^[^.,;]* of (?:the |that )?$|^\{C\d+\} (?:(?!on\b|for\b|and\b)[a-z]+ ){0,2}$|^(?:(?:\{[A-Z]\d+\}|x|by|inch),? ?)+$/;

/** The goods named this close behind own the figure. */
const OF = 24;

const NO_WASTE =
  /\b(?:no|zero|without|nothing) (?:waste|over|overage|extra)\b(?: (?:on|for) (?:the |that |this )?([a-z]+))?/g;

/** "Drip edge on the eaves, no waste": said behind the goods in their own sentence, or of them by name, beside another's waste. */
function wasteFree({ words }: Said, goods: Goods, all: readonly Goods[]): boolean {
  return [...words.matchAll(NO_WASTE)].some((m) => {
    if (/^extra (?!on\b|for\b)\w/.test(words.slice(m.index + m[0].indexOf('extra'))) && /extra$/.test(m[0]))
      return false;
    const called = m[1] ? all.filter((g) => isCalled(g, m[1]!)) : [];
    if (called.length > 0) return called.includes(goods);
    const sentence = sentenceAt(words, m.index);
    const from = words.indexOf(sentence);
    const before = all.filter((g) => g.mentions.some((at) => at >= from && at < m.index));
    if (/^(?:either|both|any|all|them|those|anything)$/.test(m[1] ?? ''))
      return before.length === 0 || before.includes(goods);
    const last = (g: Goods) => g.mentions.findLast((at) => at < m.index) ?? -1;
    const nearest = [...before].sort((a, b) => last(b) - last(a))[0];
    return nearest ? nearest === goods : goods.mentions.some((at) => at >= from && at < from + sentence.length);
  });
}

/** "Board" is drywall too. */
const isCalled = ({ item }: Goods, word: string): boolean =>
  item.includes(word.replace(/s$/, '')) || (/^(?:board|rock)$/.test(word) && /drywall/.test(item));

/** Board is in their name, but they come in no sheets. */
const SMALL = /screw|compound/;
/** Nor do these. */
const NO_SHEETS = /tape|compound|grout|thinset|mortar|caulk|sealant|primer|paint/;

/** Packs that only some goods come in. */
const PACK_OF: Readonly<Record<string, RegExp>> = {
  sheet: /board|drywall|plywood|osb|sheath|panel|underlayment|backer|mesh|subfloor|gib/,
  gal: /paint|primer|stain|sealer|varnish/,
  tube: /caulk|silicone|sealant/,
  bag: /thinset|adhesive|bonding|grout|concrete|mortar|leveler|insulation|plaster|mulch/,
  roll: /tape|paper|felt|wrap|fabric|membrane|cable|barrier|insulation|batt|carpet|underlay/,
};
/** What only some goods are counted in. */
const MADE_OF: Readonly<Record<string, RegExp>> = { screw: /screw/ };

/** Whose pack a size is: sheets by their sides, bags by their pounds, tubes by their ounces; else `other`. */
function packOwner(size: string, goods: readonly Goods[], other: number): number {
  const pack = size.includes('x') ? 'sheet' : / (?:lb|kg)$/.test(size) ? 'bag' : / oz$/.test(size) ? 'tube' : null;
  const owner = pack ? goods.findIndex((g) => !SMALL.test(g.item) && PACK_OF[pack]!.test(g.item)) : -1;
  return owner < 0 ? other : owner;
}
