import Fraction from 'fraction.js';
import { plural } from '../../../parser/quantities/plural.ts';
import { goodsNamed } from '../reading/noteTold.ts';
import { readOnce } from '../reading/readOnce.ts';
import { type Figure, figureAt, type Said, saying } from '../reading/said.ts';

/** "Two to a toilet": so many of some goods for each of some thing. */
export interface PerThing {
  item: string;
  size: string | null;
  /** Goods for one thing. */
  times: Fraction;
  /** Singular: `toilet`, `sheet`, `crossing`. */
  thing: string;
  /** How many of the thing, where the note counts them. */
  count: Fraction | null;
  /** What they come in where that is counted: bags to a post; null where they are counted singly. */
  pack: string | null;
  /** What was taken where nobody said how many go with each. */
  assumed: string | null;
}

const FASTENERS =
  'screws?|nails?|bolts?|ties|tie|clips?|hangers?|anchors?|staples?|brackets?|connectors?|washers?|hinges?|rings?|plugs?|form tubes?|tubes?|post bases?|bases?|chairs?|spacers?|covers?|boxes|shims?|straps?|caps?|stops?|plates?|pulls?|knobs?|shut ?offs?|supply lines?|valves?|traps?|hooks?';
const EACH = '(?:to|per|for|at|on|in|into)(?: (?:a|an|each|every|the|one))?|a|an|each|every|per';

/** "Two deck screws at every crossing", "fifty screws to a sheet". */
const AHEAD = saying(
  `<NC> ((?:[a-z]+ ){0,2}(?:${FASTENERS})) (?:(?:${EACH}) )?(?:<K>|(?<=(?:${EACH}) )([a-z]+)\\b)`,
  'g',
);
/** "A wax ring and two closet bolts to a toilet": what stands before goes with each too. */
const BESIDE = new RegExp(
  `(?:^|[,.:] |\\b(?:need|get|want|order|a|an|one) )((?:[a-z]+ ){0,1}(?:${FASTENERS}))(?:,| and)+ $`,
);
/** "Closet bolts, two to a toilet", "screws run about fifty to a sheet". */
const BEHIND = saying(
  `\\b((?:[a-z]+ ){0,2}(?:${FASTENERS}))(?:,|:| run| runs| go| goes| are| at| figure| take| takes| about| around)* <NC> (?:(?:${EACH}) )?(?:<K>|(?<=(?:${EACH}) )([a-z]+)\\b)`,
  'g',
);
/** "A four foot twelve inch form tube for every hole": one to each, its size told before it. */
const ONE_FOR_EVERY = saying(
  `\\b(?:an?|one) ((?:(?:<L>|<N>),? (?:by |x )?)*(?:[a-z]+ ){0,2}(?:${FASTENERS})) (?:for|to|at|on|in|per|down|under) (?:each|every|the)? ?([a-z]{3,})\\b`,
  'g',
);

/** "Mud, one bucket per five sheets", "one packet of paste to five rolls": packs of one for packs of another. */
const PACKS_FOR_PACKS = saying(
  '(?:\\b([a-z]+(?: [a-z]+)?),? |)(?:\\{W\\d+\\} )?(?:<K>|\\b(box|bag|tub|pail|bucket|tube|jar|pack|packet)\\b)(?: of ([a-z]+(?: [a-z]+)?))? (?:per|to|to every|for|for every|for each|every|each|does|do|covers|is good for)(?: the| me| about)? <K>(?! (?:of|for|at)\\b)',
  'g',
);

/** "And a wax ring for each": of the things last counted. */
const FOR_EACH = saying(
  `(?:<NC>|\\b(an?|one)) ((?:[a-z]+ ){0,2}(?:${FASTENERS})) (?:for each|apiece|each|per)(?= of|[,.]|$)`,
  'g',
);

/** "Wax rings, one for each". */
const ONE_EACH = saying(
  `\\b((?:[a-z]+ ){0,2}(?:${FASTENERS})),? (?:<NC>|\\b(?:an?|one)) (?:for each|apiece|each)\\b`,
  'g',
);
/** "Two bags of rapid set concrete per post". */
const PACKS_EACH = saying(
  '<K>(?: of)? ([a-z]+(?: (?!down\\b)[a-z]+){0,2}) (?:(?:to|per|for|in|at|around|down)(?: (?:an?|each|every|the|one))?|an?|each|every) (post|hole|footing|pier|tube)\\b',
  'g',
);

/** "Concrete's a bag and a half a hole". */
const PACKS_BEHIND = saying(
  "\\b([a-z]+(?: mix)?)(?:'s| is|:|,)* <K> (?:an?|per|each|every|to an?|in each|for each) (post|hole|footing|pier|tube)\\b",
  'g',
);

const COUNTED = saying('<NC> (?:[a-z]+ )?([a-z]{3,}s)\\b', 'g');

const LITTLE =
  /^(?:and|the|need|get|of|some|with|for|also|plus|figure|use|are|buy|bring|order|want|two|a|an|one|or|in|your|our|my|their|those|these)$/;
const single = (word: string) =>
  word === 'ties'
    ? 'tie'
    : word
        .replace(/(?<=[a-z]{3})ies$/, 'y')
        .replace(/(?<=x|sh|ch)es$/, '')
        .replace(/(?<!s)s$/, '');

/** "75 screws in a tub" tells how they come, not what they go with. */
const PACK = /^(?:box|pack|packet|package|bag|bucket|tub|jar|case|carton|card|sleeve|bundle)$/;

/** Every "so many for each" of a note; the same words are read once. */
export const perThingIn: (said: Said) => readonly PerThing[] = readOnce(toldIn);

/** "Where every board crosses a joist": at every crossing. */
const CROSSES =
  /\b(?:where |wherever |each time |every time )?(?:at )?(?:every|each|an?|the) (?:deck )?boards? (?:cross(?:es)?|meets?|hits?|goes over|lands? on|and|at|on)? ?(?:an?|each|every|the) joists?\b/g;

function toldIn(note: Said): PerThing[] {
  const said = { ...note, words: note.words.replace(CROSSES, 'at every crossing') };
  const out: PerThing[] = [];
  const keep = (goods: string, times: Fraction | null, thing: string, count: Fraction | null) => {
    const item = nameOf(said, goods);
    if (
      item &&
      !PACK.test(thing) &&
      times &&
      times.d === 1n &&
      times.compare(0) > 0 &&
      !out.some((o) => o.item === item)
    )
      out.push({ item, size: null, times, thing, count, pack: null, assumed: null });
  };
  const thingOf = (pack: string | undefined, word: string | undefined) =>
    word ? single(word) : figureAt(said, pack).value.compare(1) === 0 ? figureAt(said, pack).unit! : null;
  const value = (id: string | undefined) => (id === undefined ? null : figureAt(said, id).value);
  for (const m of said.words.matchAll(AHEAD)) {
    const thing = thingOf(m[3], m[4]);
    if (!thing) continue;
    keep(m[2]!, value(m[1]), thing, countIn(said, thing));
    const beside = BESIDE.exec(said.words.slice(0, m.index))?.[1];
    if (beside) keep(beside, new Fraction(1), thing, countIn(said, thing));
  }
  for (const m of said.words.matchAll(BEHIND)) {
    const thing = thingOf(m[3], m[4]);
    if (thing) keep(m[1]!, value(m[2]), thing, countIn(said, thing));
  }
  for (const m of said.words.matchAll(ONE_EACH)) {
    const things = [...said.words.slice(0, m.index).matchAll(COUNTED)].at(-1);
    if (things) keep(m[1]!, value(m[2]) ?? new Fraction(1), single(things[2]!), value(things[1]));
  }
  for (const m of said.words.matchAll(FOR_EACH)) {
    // "Two hinges to a door and a pull for each": the doors are meant, not the hinges.
    const things = [...said.words.slice(0, m.index).matchAll(COUNTED)].findLast(
      (c) => !out.some((o) => o.item.endsWith(single(c[2]!))),
    );
    if (things) keep(m[3]!, value(m[1]) ?? new Fraction(1), single(things[2]!), value(things[1]));
  }
  for (const m of said.words.matchAll(ONE_FOR_EVERY)) {
    if (!/\b(?:each|every|per) [a-z]+$/.test(m[0])) continue;
    const named = m[1]!.replace(/\{[A-Z]\d+\},? ?(?:by |x )?/g, '');
    const sizes = [...m[1]!.matchAll(/\{[A-Z](\d+)\}/g)].map(([, id]) => sizeText(figureAt(said, id)));
    const thing = single(m.at(-1)!);
    keep(named, new Fraction(1), thing, countIn(said, thing));
    const kept = out.at(-1);
    if (kept?.item === nameOf(said, named)) kept.size = sizes.join(' x ') || null;
  }
  for (const m of said.words.matchAll(PACKS_FOR_PACKS)) {
    const per = figureAt(said, m[5]);
    const pack = m[2] ? figureAt(said, m[2]) : { value: new Fraction(1), unit: m[3]!.replace(/et$/, '') };
    const item = nameOf(said, m[4] ?? m[1] ?? '');
    if (!item || !pack.unit || !per.unit || pack.unit === per.unit || per.value.compare(0) <= 0) continue;
    const called = goodsNamed(said).find((g) =>
      g.mentions.some((at) => at >= m.index && at <= m.index + m[0].length),
    )?.item;
    const times = pack.value.div(per.value);
    out.push({ item: called ?? item, size: null, times, thing: per.unit, count: null, pack: pack.unit, assumed: null });
  }
  if (DECK_SCREWS.test(said.words) && !out.some((o) => o.item === 'deck screw'))
    out.push({
      item: 'deck screw',
      size: null,
      times: new Fraction(2),
      thing: 'crossing',
      count: null,
      pack: null,
      assumed: TWO_A_JOIST,
    });
  for (const m of said.words.matchAll(PACKS_BEHIND)) {
    const { value: times, unit: pack } = figureAt(said, m[2]);
    const item = nameOf(said, m[1]!);
    if (item && pack && !LITTLE.test(m[1]!))
      out.push({ item, size: null, times, thing: m[3]!, count: countIn(said, m[3]!), pack, assumed: null });
  }
  for (const m of said.words.matchAll(PACKS_EACH)) {
    const { value: times, unit: pack } = figureAt(said, m[1]);
    const item = nameOf(said, m[2]!);
    // "Used a bag and a half a hole" is over.
    if (/\b(?:used|took|went through)\b[^.;]{0,24}$/.test(said.words.slice(0, m.index))) continue;
    if (item && pack)
      out.push({ item, size: null, times, thing: m[3]!, count: countIn(said, m[3]!), pack, assumed: null });
  }
  return out;
}

/** Deck screws that nobody counted. */
const DECK_SCREWS = saying(
  '(?<!<NCKW> (?:[a-z]+ ){0,2})\\b(?:deck(?:ing)? screws?|screws? for (?:the )?(?:deck|boards))\\b',
);
/** Deck construction guide extract (htecelite.com/pvc-fence/324.html). */
const TWO_A_JOIST = 'two screws a board at each joist (prescriptive deck guide)';

/** "Three toilets", "six sheets": how many of the thing a note counts. */
export function countIn(said: Said, thing: string): Fraction | null {
  const m = saying(`(?<!\\b(?:x|by) )<NC> (?:[a-z]+ ){0,2}${plural(thing)}\\b`).exec(said.words);
  // "Per five sheets" tells how far something goes, not how many there are.
  const packs = [
    ...said.words.matchAll(saying('(?<!\\b(?:per|every|each|for|to|an?|does|do|covers|handles) )<K>', 'g')),
  ].map((m) => figureAt(said, m[1]));
  const pack = packs.find((f) => f.unit === thing && !f.per && f.value.compare(1) > 0);
  const count = m ? figureAt(said, m[1]).value : (pack?.value ?? null);
  return count && count.d === 1n ? count : null;
}

/** "For the four toilets": counted for what goes on them, which buys none. */
export const onlyCounted = (said: Said, thing: string): boolean =>
  saying(`\\bfor (?:(?:all|the|of|those|these|them|my|our|both) )*<NC> (?:[a-z]+ ){0,2}${plural(thing)}\\b`).test(
    said.words,
  );

/** The goods' own term where the vocabulary has one; bare screws by the board that they are for. */
function nameOf(said: Said, goods: string): string | null {
  const words = goods.split(' ').filter((w) => w && !LITTLE.test(w));
  const named = words.join(' ');
  if (words.length === 1 && /^screws?$/.test(named)) {
    const kind = SCREWS.find((k) => k.board.test(said.words))?.kind;
    return kind ? `${kind} screw` : 'screw';
  }
  const term = said.terms.find(
    (t) => (t.term.kind === 'material' || t.term.kind === 'part') && t.quote.toLowerCase() === named,
  );
  if (term) return term.term.name;
  return [...words.slice(0, -1), single(words.at(-1) ?? '')].join(' ') || null;
}

const sizeText = ({ value, unit }: Figure): string => `${value.toFraction(true)}${unit ? ` ${unit}` : ''}`;

const SCREWS = [
  { board: /\b(?:cement board|backer|cbu\b)/, kind: 'backer board' },
  { board: /\b(?:drywall|sheet ?rock|gypsum)/, kind: 'drywall' },
  { board: /\bdeck/, kind: 'deck' },
];
