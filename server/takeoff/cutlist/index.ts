import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { tape } from '../calculators/reckoned.ts';
import { remembered } from '../reading/remembered.ts';
import { type Figure, figureAt, lengthIn, type Said, saying, sentencesOf } from '../reading/said.ts';
import type { ComputedLine } from '../types.ts';
import { cutList } from './cutList.ts';

/** What the notes have told so far of one cut list. All lengths in inches. */
interface List {
  area: string | null;
  item: string | null;
  pieces: Map<string, { length: Fraction; count: number }>;
  stock: { length: Fraction; called: string }[];
  onHand: { length: Fraction | null; count: number }[];
  kerf: Fraction | null;
  noteIds: string[];
}

/** A blade's cut where nobody said: common practice, no source. */
const USUAL_KERF = new Fraction(1, 8);

const CALLS =
  /\bcut ?lists?\b|\bkerf\b|\bblade\b|\bsaw ?cut (?=\{L\d+\})|\bfewest (?:sticks|boards|pieces|lengths)\b|\bcuts? (?:out of|from)\b|\bcut me\b|\bpieces to cut\b|\b(?:for|per) (?:each|every|the|a) (?:(?:saw )?cut|saw)\b|\b(?:how many|least) (?:sticks|boards|lengths)\b/;
const callsFor = remembered((words) => CALLS.test(words));
const HAVE =
  /\b(?:got|have|had|there's|theres|there is|there are|found|on hand|left ?over|left|drops?|off ?cuts?|scraps?|on the truck|in the (?:van|truck|shop|rack))\b/;
/** What the yard has is for sale, not on hand. */
const NOT_HAVE =
  /\b(?:got to|have to|had to|gotta|need|buy|left to|they(?:'ve| have)? got|they (?:have|had|carry|stock|sell)|(?:yard|store|supplier|place) (?:has|had|has got|carries|stocks|sells))\b/;

const PIECE = [
  saying(
    '(?:(?<!\\b(?:x|by) )<NC>|\\b(a|an|another|one)) (?!(?:x|by) )((?:more )?)(?:[a-z-]+ ){0,3}?(?:at|cut to|of) <LN>',
    'g',
  ),
  saying('<NC>()() x <LN>', 'g'),
];
const KERF = saying(
  "kerf(?: is| of| at|'s)? (?:a |an )?<LN>|<LN>(?: of)?(?: a)?(?: for the| per)?(?: saw)? (?:kerf|blade|cut)|(?:blade(?: takes| is|'s| eats)?|saw ?cut) (?:a |an )?<LN>",
);
const NO_KERF = /\b(?:no kerf|ignore the (?:kerf|blade)|forget the (?:kerf|blade))\b/;
const STOCK = [
  saying('(?:{[NL]\\d+}|\\d) ?(?:by|x) ?(?:{[NL]\\d+}|\\d)(?:,? (?:in |all |at )?<L>(?: or <L>)?| ?x <LN>)'),
  saying("(?:in|come in|comes in|sold in|buy|out of|from|only|stock is|stock's|sticks are) (?:full )?<L>(?: or <L>)?"),
  saying('<L> (?:sticks?|stock|boards?|lengths?|studs?|pieces of stock)'),
];
/** What stands before lengths in the plural: "in 8s", "1x4 eights". */
const BEFORE_PLURAL =
  '(?:\\b(?:in|come in|buy|out of|from|only) (?:full )?|(?:\\{N\\d+\\}|\\d) ?(?:x|by) ?(?:\\{N\\d+\\}|\\d) )';
/** "In 8s", "10s": lengths in feet, as the yard calls them. */
const FEET_PLURAL = new RegExp(`${BEFORE_PLURAL}(8|10|12|14|16|20) ?s\\b(?: (?:or|and) (8|10|12|14|16|20) ?s\\b)?`);
const SPELT = ['eights', 'tens', 'twelves', 'fourteens', 'sixteens'];
const SPELT_PLURAL = new RegExp(`${BEFORE_PLURAL}(${SPELT.join('|')})\\b`);
const HELD = saying('(?:<NC>|\\b(a|an|one|another))(?: more)?(?: [a-z]+){0,2} (?:at )?<L>', 'g');
const HELD_FULL = saying(
  '(?:<NC>|\\b(a|an|one|another)) (?:full|whole|uncut|new) (?:sticks?|ones?|lengths?|boards?|{)',
  'g',
);

/**
 * Cut lists told in notes: what to buy, stock on hand first. A later note adds to the list, changes it or tells of
 * stock. `claimed`: the notes that are about a cut list, which no other take-off reads.
 */
export function cutLines(notes: readonly Said[]): {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
  claimed: ReadonlySet<string>;
} {
  const lists: List[] = [];
  for (const note of notes) {
    const calls = callsFor(note.words);
    if (!calls && !lists.length) continue;
    const stands = lists.findLast((l) => l.area === note.area) ?? (lists.length === 1 ? lists[0] : undefined);
    if (!calls && !(stands && about(note, stands))) continue;
    const clauses = clausesOf(note.words);
    const pieces = piecesIn(note, clauses);
    const fresh = !stands || (calls && pieces.length > 1 && stands.item !== null && stands.item !== itemIn(note));
    if (fresh && pieces.length === 0) continue;
    const list = fresh ? newList(note.area) : stands;
    if (fresh) lists.push(list);
    take(list, note, clauses, pieces);
  }
  const answers = lists.map(linesOf);
  return {
    lines: answers.flatMap((a) => a.lines),
    questions: answers.flatMap((a) => a.questions),
    claimed: new Set(lists.flatMap((l) => l.noteIds)),
  };
}

const newList = (area: string | null): List => ({
  area,
  item: null,
  pieces: new Map(),
  stock: [],
  onHand: [],
  kerf: null,
  noteIds: [],
});

/** A later note that tells of the list's goods, its pieces or what to use first. */
const about = (note: Said, list: List): boolean =>
  (list.item !== null && itemIn(note) === list.item) ||
  /\b(?:use (?:it|them|that|those|these) (?:up )?first|footers?|sticks?|cut list|kerf|blade)\b/.test(note.words);

/** Clauses, so that what is on hand is not taken for what is to be cut. */
const clausesOf = (words: string): string[] =>
  sentencesOf(words).flatMap((s) =>
    s.split(/, (?!\{)| so (?=use|i|we|need)| but | (?=need the rest)/).map((c) => c.trim()),
  );

function take(list: List, note: Said, clauses: readonly string[], pieces: ReturnType<typeof piecesIn>): void {
  list.noteIds.push(note.noteId);
  list.item = itemIn(note) ?? list.item;
  for (const { length, count, more } of pieces) {
    const key = length.toFraction();
    const before = more ? (list.pieces.get(key)?.count ?? 0) : 0;
    list.pieces.set(key, { length, count: count + before });
  }
  const held = clauses.filter(tellsStock);
  const stock = clauses.filter((c) => !tellsStock(c)).flatMap((c) => stockIn(note, c));
  if (stock.length) list.stock = stock;
  const kerf = kerfIn(note);
  if (kerf) list.kerf = kerf;
  list.onHand.push(...held.flatMap((c) => heldIn(note, c)));
}

const tellsStock = (clause: string) => HAVE.test(clause) && !NOT_HAVE.test(clause);

function piecesIn(note: Said, clauses: readonly string[]): { length: Fraction; count: number; more: boolean }[] {
  const found: { figure: Figure; count: number; more: boolean }[] = [];
  for (const pattern of PIECE) {
    // "6 x 41 in" is a count only where nothing was said "at" a length: else it is the size of the stock.
    if (found.length > 0) break;
    for (const clause of clauses.filter((c) => !tellsStock(c)))
      for (const [, n, one, more, id] of clause.matchAll(pattern)) {
        const figure = figureAt(note, id);
        const count = one ? 1 : figureAt(note, n).value.valueOf();
        const stick = pattern === PIECE[1] && figure.unit === null && figure.value.compare(12) <= 0;
        if (!stick && Number.isInteger(count) && count > 0)
          found.push({ figure, count, more: /more/.test(more ?? '') || one === 'another' });
      }
  }
  // Pieces without a unit beside a blade or stock in millimetres or metres: nobody cuts a hundred inches by the dozen.
  const bare = found.every((f) => !f.figure.sure && f.figure.value.compare(100) >= 0);
  const metric =
    found.find((f) => f.figure.unit === 'mm' || f.figure.unit === 'cm')?.figure.unit ??
    (bare && note.figures.some((f) => f.sure && (f.unit === 'mm' || f.unit === 'm')) ? 'mm' : null);
  return found.flatMap(({ figure, count, more }) => {
    const length = metric && !figure.sure ? convert(figure.value, metric, 'in') : lengthIn(figure, 'in', 'in');
    return length ? [{ length, count, more }] : [];
  });
}

function stockIn(note: Said, clause: string): List['stock'] {
  const footers = [...clause.matchAll(saying('<L>', 'g'))]
    .map(([, id]) => figureAt(note, id))
    .filter((f) => /footer/.test(f.quote));
  if (footers.length > 0 && footers.every((f) => f.unit === 'ft')) {
    const more = /or (8|10|12|14|16|20) ?s\b/.exec(clause)?.[1];
    const feet = [...footers.map((f) => f.value), ...(more ? [new Fraction(more)] : [])];
    return feet.map((f) => ({ length: f.mul(12), called: `${tape(f)} ft` }));
  }
  const spelt = SPELT_PLURAL.exec(clause)?.[1];
  if (spelt) {
    const feet = SPELT.indexOf(spelt) * 2 + 8;
    return [{ length: new Fraction(feet * 12), called: `${feet} ft` }];
  }
  const plural = FEET_PLURAL.exec(clause);
  if (plural)
    return plural
      .slice(1)
      .filter(Boolean)
      .map((feet) => ({ length: new Fraction(feet!).mul(12), called: `${feet} ft` }));
  for (const pattern of STOCK) {
    const ids = (pattern.exec(clause)?.slice(1) ?? []).filter((id) => id !== undefined);
    const lengths = ids.flatMap((id) => {
      const figure = figureAt(note, id);
      const length = lengthIn(figure, 'in', 'ft');
      return length && sold(length) ? [{ length, called: `${tape(figure.value)} ${figure.unit ?? 'ft'}` }] : [];
    });
    if (lengths.length) return lengths;
  }
  return [];
}

/** Yards sell sticks of 3 to 25 ft (common practice, no source); other figures were misread. */
const sold = (inches: Fraction) => inches.compare(36) >= 0 && inches.compare(300) <= 0;

function kerfIn(note: Said): Fraction | null {
  if (NO_KERF.test(note.words)) return new Fraction(0);
  const id = KERF.exec(note.words)?.slice(1).find(Boolean);
  const kerf = id ? lengthIn(figureAt(note, id), 'in', 'in') : null;
  return kerf && kerf.compare(new Fraction(1, 2)) <= 0 ? kerf : null;
}

/** Sticks on hand; a length of null is a full stick of the stock. */
function heldIn(note: Said, clause: string): List['onHand'] {
  const countOf = (n: string | undefined, one: string | undefined) => (one ? 1 : figureAt(note, n).value.valueOf());
  const sized = [...clause.matchAll(HELD)].flatMap(([, n, one, id]) => {
    const length = lengthIn(figureAt(note, id), 'in');
    return length ? [{ length, count: countOf(n, one) }] : [];
  });
  if (sized.length) return sized;
  return [...clause.matchAll(HELD_FULL)].map(([, n, one]) => ({ length: null, count: countOf(n, one) }));
}

/** "2x4", or the trade word for what is cut. */
function itemIn(note: Said): string | null {
  const size = saying('(?:<N>|(\\d)) ?(?:by|x) ?(?:<N>|(\\d+))').exec(note.words);
  if (size) {
    const [thick, wide] = [
      size[1] ? figureAt(note, size[1]).value : size[2],
      size[3] ? figureAt(note, size[3]).value : size[4],
    ];
    const [a, b] = [Number(thick?.valueOf()), Number(wide?.valueOf())];
    // Nominal inches, or millimetres as planed timber is called: 38x89.
    if ((a <= 8 && b <= 12) || (a >= 12 && a <= 100 && b >= 25 && b <= 300)) return `${a}x${b}`;
  }
  return note.terms.find((t) => t.term.kind === 'material' && !/blade|saw/.test(t.term.name))?.term.name ?? null;
}

function linesOf(list: List): { lines: ComputedLine[]; questions: { noteId: string; ask: string }[] } {
  const item = list.item ?? 'lumber';
  const stock = list.stock.map((s) => s.length);
  const full = stock[0];
  const onHand = list.onHand.flatMap(({ length, count }) => {
    const each = length ?? full;
    return each ? Array<Fraction>(Math.min(count, 100)).fill(each) : [];
  });
  const found = cutList({ pieces: [...list.pieces.values()], onHand, stock, kerf: list.kerf ?? USUAL_KERF });
  if (!found.ok)
    return { lines: [], questions: [{ noteId: list.noteIds.at(-1)!, ask: `Cut list of ${item}: ${found.why}` }] };
  const lines = found.buy.map(
    ({ length, count }): ComputedLine => ({
      item,
      size: list.stock.find((s) => s.length.equals(length))!.called,
      specs: [],
      area: list.area,
      amount: new Fraction(count),
      unit: 'each',
      pack: null,
      stockUsed: true,
      working: found.working,
      assumptions: list.kerf ? [] : ['1/8 in for the blade, common practice'],
      source: 'arithmetic: every smaller purchase is ruled out',
      noteIds: list.noteIds,
    }),
  );
  return { lines, questions: [] };
}
