import type Fraction from 'fraction.js';
import { likeness, wordsOf } from '../../../parser/trade/likeness.ts';
import { readOnce } from '../reading/readOnce.ts';
import { figureAt, type Said, saying } from '../reading/said.ts';
import type { ComputedLine, PackFor } from '../types.ts';

/** Goods that are counted, and how many come in one pack, as a note said it. */
interface SaidPack {
  item: string;
  words: ReadonlySet<string>;
  pack: { unit: string; holds: Fraction };
}

const WORDS =
  'box|boxes|pack|packs|packet|packets|package|packages|bag|bags|card|cards|case|cases|carton|cartons|sleeve|sleeves|bucket|buckets|jar|jars|tub|tubs|bundle|bundles|pallet|pallets';
const NAMED = new RegExp(`^(?:${WORDS})$`);
const unitOf = (word: string) =>
  word
    .replace(/(?<=x)es$/, '')
    .replace(/s$/, '')
    .replace(/^(?:packet|package)$/, 'pack');

/** "Box of 25" is how goods come where no other goods follow; "a box of 25" is an order. */
const OF = saying(
  `(\\b(?:an?|one|another|the) |\\{[A-Z]\\d+\\} )?(?:\\b(${WORDS})|<K>) of <NC>(?=$|[.,;]| (?:and|so|each|at|if|or|but|apiece)\\b)`,
  'g',
);
const SOLD =
  /\b(?:come|comes|sold|sell|sells|packed|buy|bought|get)(?: (?:it|them|these|those|em|only))?(?: (?:in|by))?(?: (?:a|the))? $/;
/** "They come 350 to a box", "two in a pack", "25 a box". */
const IN = saying(
  `<NC>(?: of them| [a-z]+)? (?:to|in|per)(?: (?:a|the|each|every|one))? (${WORDS})\\b|<NC>(?: [a-z]+)?(?: (?:to|in|per))? <K>|<NC> a (${WORDS})\\b`,
  'g',
);

/** "Box is 150", "a box holds 25". */
const HOLDS = saying(
  `\\b(${WORDS})(?: of them)?(?:'s| =| is| are| has| have| holds?)(?: about)? (?:an? )?<NC>(?=$|[.,;]| (?:and|so|each|but|of them|pieces)\\b)`,
  'g',
);

/** "100 to the pound, they come in 5 lb boxes". */
const TO_THE_POUND = saying('<NC>(?: [a-z]+)? (?:to|in|per) (?:the |a )?(?:pound|lb)\\b');
const POUNDS = saying(`<W>[- ](${WORDS})\\b`);

interface PlacedPack {
  at: number;
  unit: string;
  holds: Fraction;
}

/** Packs that one note tells of, with the place of the words; the same words are read once. */
const packsOf: (said: Said) => readonly PlacedPack[] = readOnce(packsIn);

function packsIn(said: Said): PlacedPack[] {
  const out: PlacedPack[] = [];
  const keep = (at: number, word: string | undefined, pack: string | undefined, holds: string | undefined) => {
    const named = pack === undefined ? null : figureAt(said, pack);
    const unit = word ? unitOf(word) : named?.value.compare(1) === 0 ? named.unit : null;
    const figure = figureAt(said, holds);
    const whole = figure.value.d === 1n && figure.value.compare(1) > 0;
    if (unit && whole && NAMED.test(unit)) out.push({ at, unit, holds: figure.value });
  };
  for (const m of said.words.matchAll(OF))
    if (
      !m[1] ||
      SOLD.test(said.words.slice(0, m.index + m[0].indexOf(m[1])) + m[1]) ||
      SOLD.test(said.words.slice(0, m.index))
    )
      keep(m.index, m[2], m[3], m[4]);
  const [count, weight] = [TO_THE_POUND.exec(said.words), POUNDS.exec(said.words)];
  const pounds = weight && figureAt(said, weight[1]);
  if (count && pounds?.unit === 'lb')
    out.push({ at: count.index, unit: unitOf(weight![2]!), holds: figureAt(said, count[1]).value.mul(pounds.value) });
  for (const m of said.words.matchAll(HOLDS)) keep(m.index, m[1], undefined, m[2]);
  for (const m of said.words.matchAll(IN)) keep(m.index + m[0].length, m[2] ?? m[6], m[4], m[1] ?? m[3] ?? m[5]);
  return out;
}

/** Goods that a note counts: a pack may be said of them in the same note or a later one. */
const countedIn = ({ facts }: Said): string[] =>
  facts.flatMap((f) =>
    f.kind === 'material' && f.status === 'need' && (f.unit === null || f.unit === 'each') ? [f.item] : [],
  );

/** The counted goods that a pack is said of: named last before it, with no other goods nearer; else the first after. */
function owner(said: Said, at: number, counted: readonly string[]): string | null {
  const others = said.terms
    .filter((t) => t.term.kind === 'material' || t.term.kind === 'part')
    .map((t) => ({
      called: t.quote.toLowerCase(),
      item: counted.find((c) => likeness(wordsOf(t.term.name), wordsOf(c)) >= 0.75) ?? null,
    }));
  const placed = [...counted.map((item) => ({ called: item, item })), ...others].flatMap(({ called, item }) =>
    placesOf(said.words, called).map((place) => ({ item, place })),
  );
  const order = placed.sort((a, b) => a.place - b.place || (a.item ? 1 : -1));
  return (order.findLast((g) => g.place < at) ?? order[0])?.item ?? null;
}

/** Where the words name goods, by the last word of their name; "two to a toilet", "ten nails a hanger" ask for no toilet. */
function placesOf(words: string, item: string): number[] {
  const head = item
    .split(' ')
    .at(-1)!
    .replace(/s$/, '')
    .replace(/[^a-z0-9]/gi, '.');
  const named = new RegExp(
    `(?<!\\b(?:to|per|for|at|on|in) (?:(?:an?|the|each|every|one) )?|\\b(?:each|every) |\\bfor the [a-z]+ |\\{[NC]\\d+\\} (?:[a-z]+ ){1,2}(?:an?|each|every|per) )\\b${head}(?:e?s)?\\b`,
    'g',
  );
  return [...words.matchAll(named)].map((m) => m.index);
}

/** Lumber is bought by the stick: no box or tub is said of it. */
const STICKS = /\b(?:joist|stud|rafter|truss|post|plate|board|rail)$/;

const headOf = (item: string) => item.split(' ').at(-1)!.replace(/s$/, '');

/** How counted goods come by what the notes say, the latest first; null where they do not say. */
export function packsSaid(notes: readonly Said[], lines: readonly ComputedLine[]): PackFor {
  const known: SaidPack[] = [];
  const counted = new Set(lines.filter((l) => l.unit === 'each' && !STICKS.test(l.item)).map((l) => l.item));
  let gathered = 0;
  for (const [k, note] of notes.entries()) {
    const packs = packsOf(note);
    if (packs.length === 0) continue;
    for (; gathered <= k; gathered++) for (const item of countedIn(notes[gathered]!)) counted.add(item);
    for (const { at, ...pack } of packs) {
      const item = owner(note, at, [...counted]);
      if (item) known.unshift({ item, words: wordsOf(item), pack });
    }
  }
  return (item, _size, unit) => {
    if (unit !== 'each' || known.length === 0) return null;
    const words = wordsOf(item);
    // A box of hanger nails holds no hangers.
    const found = known.find((k) => likeness(words, k.words) >= 0.75 && headOf(k.item) === headOf(item));
    return found ? { ...found.pack, supplier: null } : null;
  };
}
