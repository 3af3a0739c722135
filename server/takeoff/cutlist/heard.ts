import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { tape } from '../calculators/reckoned.ts';
import { STICK_FEET } from '../reading/packWords.ts';
import { type Figure, figureAt, lengthIn, type Said, saying, sentencesOf } from '../reading/said.ts';

/** Pieces to cut; `more`: beside those of this length told before. Inches. `called`: "blocks"; empty where not said. */
export interface Piece {
  length: Fraction;
  count: number;
  more: boolean;
  called: string;
  /** The figure of its length in the note. */
  figure: Figure;
}

/** A length that the yard sells, inches, and what it is called: `8 ft`. */
export interface StockLength {
  length: Fraction;
  called: string;
}

/** Sticks on hand; a length of null is a full stick of the stock. */
export interface Held {
  length: Fraction | null;
  count: number;
}

const HAVE =
  /\b(?:got|have|had|there's|theres|there is|there are|found|on hand|left ?over|left|drops?|off ?cuts?|scraps?|on the truck|in the (?:van|truck|shop|rack))\b/;
/** What the yard has is for sale, not on hand. */
const NOT_HAVE =
  /\b(?:got to|have to|had to|gotta|need|buy|left to|they(?:'ve| have)? got|they (?:have|had|carry|stock|sell)|(?:yard|store|supplier|place) (?:has|had|has got|carries|stocks|sells))\b/;

const PIECE = [
  saying(
    '(?:(?<!\\b(?:x|by) )<NC>|\\b(a|an|another|one)) (?!(?:x|by) )((?:more )?)(?:{N\\d+} ?x ?{[NL]\\d+} )?((?:[a-z-]+ ){0,3}?)(?:at|cut to|of) <LN>',
    'g',
  ),
  // "Three pieces forty-seven", "two uprights 71 long": pieces named, and how long.
  saying(
    '(?<!\\b(?:x|by) )<NC>() ((?:more )?)(?:{N\\d+} ?x ?{[NL]\\d+} )?((?:(?!(?:x|by|for|per|in|of|a|the|at|sticks?|boards?|bays?|percent)\\b)[a-z-]+ ){1,3}?)(?:cut )?(?:at |of |to )?<LN>(?! ?(?:x|by|foot|ft|on center|percent))',
    'g',
  ),
  saying('<C>()()() (?:cut )?<LN>(?! ?(?:x|by|foot|ft|on center|percent))', 'g'),
  saying('<NC>()()() off(?: at)? <LN>', 'g'),
  saying('<NC>()()() x <LN>', 'g'),
];
/** Patterns that may stand side by side in one list. */
const TOGETHER = 3;

/** "1430 two times": the length first. */
const TIMES = saying('<LN> (?:<NC>|(one|two|three|four|five|six|seven|eight)) times?\\b', 'g');
const SPELT = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
const KERF = saying(
  "kerf(?: is| of| at|'s)? (?:a |an )?<LN>|<LN>(?: of)?(?: a)?(?: for the| per)?(?: saw)? (?:kerf|blade|cut)|(?:(?:blade|saw)(?: takes| is|'s| eats)?|saw ?cut) (?:a |an )?<LN>",
);
const NO_KERF = /\b(?:no kerf|ignore the (?:kerf|blade)|forget the (?:kerf|blade))\b/;
const STOCK = [
  saying('(?:{[NL]\\d+}|\\d) ?(?:by|x) ?(?:{[NL]\\d+}|\\d)(?:,? (?:in |all |at )?<L>(?: or <L>)?| ?x <LN>)'),
  saying(
    "(?:in|come in|comes in|comes|sold in|buy|out of|from|only|stock is|stock's|sticks are) (?:full )?<L>(?: or <L>)?",
  ),
  saying('<L> (?:sticks?|stock|boards?|lengths?|studs?|pieces of stock)'),
];
/** What stands before lengths in the plural: "in 8s", "1x4 eights". */
const BEFORE_PLURAL =
  '(?:\\b(?:in|come in|buy|out of|from|only) (?:full )?|(?:\\{N\\d+\\}|\\d) ?(?:x|by) ?(?:\\{N\\d+\\}|\\d) )';
/** "In 8s", "10s": lengths in feet, as the yard calls them. */
const FEET_PLURAL = new RegExp(`${BEFORE_PLURAL}(8|10|12|14|16|20) ?s\\b(?: (?:or|and) (8|10|12|14|16|20) ?s\\b)?`);
const SPELT_PLURAL = new RegExp(`${BEFORE_PLURAL}(eights|tens|twelves|fourteens|sixteens)\\b`);
/** "Two 2x4 eight footers": the figures of the section count nothing. */
const HELD = saying(
  '(?:(?<! x )<NC>(?! x )|\\b(a|an|one|another))(?: more)?(?: [a-z]+){0,2}(?: <N> x <N>)?(?: [a-z]+){0,2} (?:at )?<L>',
  'g',
);
/** "A 68 and a 44 leftover": what is left over is told in inches. */
const HELD_BARE = saying('(?:\\b(?:an?|another|one)) <N>(?! ?(?:x|by|of)\\b)', 'g');
const HELD_FULL = saying(
  '(?:<NC>|\\b(a|an|one|another)) (?:full|whole|uncut|new) (?:sticks?|ones?|lengths?|boards?|{)',
  'g',
);

/** Clauses, so that what is on hand is not taken for what is to be cut. */
export const clausesOf = (words: string): string[] =>
  sentencesOf(words).flatMap((s) =>
    s.split(/, (?!\{)| so (?=use|i|we|need)| but | (?=need the rest)/).map((c) => c.trim()),
  );

export const tellsStock = (clause: string) => HAVE.test(clause) && !NOT_HAVE.test(clause);

export function piecesIn(note: Said, clauses: readonly string[]): Piece[] {
  const found: Omit<Piece, 'length'>[] = [];
  const taken = new Set<string>();
  for (const [k, pattern] of PIECE.entries()) {
    // "6 x 41 in" is a count only where nothing was said "at" a length: else it is the size of the stock.
    if (found.length > 0 && k >= TOGETHER) break;
    for (const clause of clauses.filter((c) => !tellsStock(c)))
      for (const [, n, one, more, called = '', id] of clause.matchAll(pattern)) {
        const figure = figureAt(note, id);
        if (taken.has(id!) || (n && taken.has(n))) continue;
        for (const used of [id, n]) if (used) taken.add(used);
        const count = one ? 1 : figureAt(note, n).value.valueOf();
        const stick = pattern === PIECE.at(-1) && figure.unit === null && figure.value.compare(12) <= 0;
        if (!stick && Number.isInteger(count) && count !== 0)
          found.push({ figure, count, more: /more/.test(more ?? '') || one === 'another', called: called.trim() });
      }
  }
  if (found.length === 0)
    for (const clause of clauses)
      for (const [, id, n, word] of clause.matchAll(TIMES)) {
        const count = word ? SPELT.indexOf(word) + 1 : figureAt(note, n).value.valueOf();
        found.push({ figure: figureAt(note, id), count, more: false, called: '' });
      }
  // Pieces without a unit beside a blade or stock in millimetres or metres: nobody cuts a hundred inches by the dozen.
  const bare = found.every((f) => !f.figure.sure && f.figure.value.compare(100) >= 0);
  const metric =
    found.find((f) => f.figure.unit === 'mm' || f.figure.unit === 'cm')?.figure.unit ??
    (bare && note.figures.some((f) => f.sure && (f.unit === 'mm' || f.unit === 'm')) ? 'mm' : null);
  return found.flatMap((piece) => {
    const { figure } = piece;
    const length = metric && !figure.sure ? convert(figure.value, metric, 'in') : lengthIn(figure, 'in', 'in');
    return length ? [{ length, ...piece }] : [];
  });
}

/** Pieces told with their length that no rule could count: in words, `47`. A list that leaves them out would buy too little. */
export function unreadPieces(note: Said, clauses: readonly string[], pieces: readonly Piece[]): string[] {
  return clauses
    .filter((c) => !tellsStock(c))
    .flatMap((clause) => [...clause.matchAll(UNREAD)])
    .flatMap(([, count, id]) => {
      const [n, figure] = [figureAt(note, count), figureAt(note, id)];
      const length = figure.unit === 'ft' ? null : lengthIn(figure, 'in', 'in');
      const read = length === null || pieces.some((p) => p.figure === figure);
      return read || n.value.d !== 1n || length.compare(4) < 0 ? [] : [`${n.quote} at ${figure.quote}`];
    });
}

const UNREAD = saying(
  '(?<!\\b(?:x|by) )<NC> (?:(?!(?:x|by|out|from|in|for|per|the|a|an|blade|saw|kerf|cut|s|footers?|is)\\b)[a-z-]+ ){0,4}?<LN>(?! ?(?:x|by|on center|percent|feet|foot|ft|blade|kerf|for the)\\b)',
  'g',
);

export function stockIn(note: Said, clause: string): StockLength[] {
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
    const feet = STICK_FEET[spelt]!;
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

export function kerfIn(note: Said): Fraction | null {
  if (NO_KERF.test(note.words)) return new Fraction(0);
  const id = KERF.exec(note.words)?.slice(1).find(Boolean);
  const kerf = id ? lengthIn(figureAt(note, id), 'in', 'in') : null;
  return kerf && kerf.compare(new Fraction(1, 2)) <= 0 ? kerf : null;
}

export function heldIn(note: Said, clause: string): Held[] {
  const countOf = (n: string | undefined, one: string | undefined) => (one ? 1 : figureAt(note, n).value.valueOf());
  const sized = [...clause.matchAll(HELD)].flatMap(([, n, one, ...ids]) => {
    const id = ids.at(-1);
    const length = lengthIn(figureAt(note, id), 'in');
    return length ? [{ length, count: countOf(n, one) }] : [];
  });
  if (sized.length) return sized;
  const bare = /\b(?:left ?overs?|drops?|off ?cuts?|scraps?)\b/.test(clause)
    ? [...clause.matchAll(HELD_BARE)].map(([, id]) => ({ length: lengthIn(figureAt(note, id), 'in', 'in'), count: 1 }))
    : [];
  if (bare.length) return bare;
  return [...clause.matchAll(HELD_FULL)].map(([, n, one]) => ({ length: null, count: countOf(n, one) }));
}

/** Sticks of a section under their own name: `board`, `oak board`. */
export const calledIn = (words: string): string | null =>
  /\b((?:(?:oak|pine|cedar|maple|poplar|fir|treated) )?(?:board|batten|lath|strip|plank))s?\b(?! (?:feet|foot|and batten))/.exec(
    words,
  )?.[1] ?? null;

/** "2x4", or the trade word for what is cut. */
export function itemIn(note: Said): string | null {
  const size = saying('(?:<N>|(\\d)) ?(?:by|x) ?(?:<N>|(\\d+))').exec(note.words);
  if (size) {
    const [thick, wide] = [
      size[1] ? figureAt(note, size[1]).value : size[2],
      size[3] ? figureAt(note, size[3]).value : size[4],
    ];
    const [a, b] = [Number(thick?.valueOf()), Number(wide?.valueOf())];
    // Nominal inches, or millimetres as planed timber is called: 38x89.
    // Five quarter stock goes by its own name.
    if (a === 1.25 && b <= 12) return `5/4x${b}`;
    if ((a <= 8 && b <= 12) || (a <= 2 && b <= 24) || (a >= 12 && a <= 100 && b >= 25 && b <= 300)) return `${a}x${b}`;
  }
  return note.terms.find((t) => t.term.kind === 'material' && !/blade|saw/.test(t.term.name))?.term.name ?? null;
}
