import type Fraction from 'fraction.js';
import { figureAt, type Said, saying } from '../reading/said.ts';

/** Pieces that stand in a row, and how their row is told. */
interface Kind {
  item: string;
  named: RegExp;
  /** Section of a piece by nominal size, where the trade has a usual one. */
  usual?: { spacing?: number; size?: string };
  /** It holds up what another take-off reckons along the same run, and leaves the run to it. */
  holds?: true;
}

export const KINDS: readonly Kind[] = [
  { item: 'baluster', named: /\b(?:balusters?|spindles?)\b/ },
  { item: 'picket', named: /\bpickets?\b|\bpalings?\b|\bfence boards?\b/ },
  { item: 'deck board', named: /\bdeck(?:ing)? boards?\b|\bdecking\b|\bboards\b(?=.*\bgap\b)/ },
  { item: 'slat', named: /\bslats?\b/ },
  { item: 'joist', named: /\b(?:joists?)\b(?! hangers?)/, usual: { spacing: 16 } },
  { item: 'rafter', named: /\brafters?\b/, usual: { spacing: 16 } },
  { item: 'truss', named: /\btruss(?:es)?\b/, usual: { spacing: 24 } },
  {
    item: 'stud',
    named:
      /\b(?<!stair )studs?\b(?! (?:finder|wall|bay))|\bstud walls?\b(?=.*\b(?:precuts?|sixteens|centers|centres|on center)\b)|\{N\d+\} x \{N\d+\} ?s\b(?=.*\bwall\b)(?=.*(?:\bcenter\b| s at \{))|\{N\d+\} by \{N\d+\} at \{N\d+\}(?=.*\bwall\b)/,
    usual: { spacing: 16 },
  },
  { item: 'fence post', named: /\b(?:fence|line|corner|gate|rail)? ?posts?\b/ },
  { item: 'furring strip', named: /\b(?:furring|strapping)(?: strips?)?\b/, usual: { spacing: 16 } },
  { item: 'purlin', named: /\bpurlins?\b/ },
  { item: 'sleeper', named: /\bsleepers?\b/ },
  { item: 'batten', named: /(?<!\bboard and )\bbattens?\b/ },
  { item: 'bracket', named: /\b(?:brackets?|hooks?)\b/ },
  { item: 'gutter hanger', named: /\bgutter (?:hangers?|brackets?)\b|(?<=\bgutters?\b.*)\bhangers?\b/, holds: true },
  { item: 'anchor bolt', named: /\banchor bolts?\b|\banchors?\b/ },
  { item: 'strap', named: /\b(?:pipe |cable )?(?:straps?|clips?|staples?)\b/, holds: true },
  { item: 'rebar', named: /\brebar\b/ },
  { item: 'pier', named: /\b(?:footings?|piers?|sonotubes?|tubes?|holes?)\b/ },
];

export const holds = (item: string): boolean => KINDS.some((k) => k.item === item && k.holds);

/** "Needs 8 clips": how many there shall be was said. */
export const countedIn = (said: Said, item: string): boolean =>
  saying(`<NC> (?:[a-z]+ )?(?:${KINDS.find((k) => k.item === item)!.named.source})`).test(said.words);

/** What one note tells of a row; lengths in inches, null where it says nothing of it. */
export interface RowTold {
  item: string;
  /** The word said for it, where the trade has two: `spindle`. */
  called: string | null;
  spacing: Fraction | null;
  runs: Fraction[];
  /** Rows alike: both sides of a roof, three walls of one length. */
  times: number | null;
  /** Nominal section: `2x4`. */
  section: string | null;
  /** Length of a piece, inches. */
  piece: Fraction | null;
  width: Fraction | null;
  gap: { width: Fraction; most: boolean } | null;
  extra: number | null;
  /** The pieces are on the job already: they are counted for what goes with them. */
  there: boolean | null;
  /** How far in from each end of the run the first and last piece stand, inches. */
  inset: Fraction | null;
  /** The ends of the row stand already: no piece there. */
  noEnds: boolean | null;
  /** Runs meet at corners and share the post there. */
  corners: boolean | null;
  /** Hangers a piece. */
  hangers: number | null;
  /** Rails a bay. */
  rails: number | null;
  /** Section and length of the rails: `2x4 8 ft`. */
  railSize: string | null;
  /** The bottom plate is treated. */
  treated: boolean | null;
  /** Panels between posts, one a bay. */
  panels: boolean | null;
  /** Plates along each wall. */
  plates: number | null;
  /** Length of the sticks that plates are cut from, inches, where it is their own. */
  plateStick: Fraction | null;
  hole: { diameter: Fraction; depth: Fraction } | null;
  /** The post stands in the concrete and is taken out of it. */
  lessPost: boolean | null;
  /** Bags are counted up hole by hole. */
  eachHole: boolean | null;
  /** Holes, where they were counted. */
  holes: number | null;
  /** Figures that are spoken for. */
  used: Set<number>;
}

/** The word said for pieces that the trade calls by several. */
const CALLED: Readonly<Record<string, RegExp>> = {
  baluster: /\bspindle(?=s?\b)/,
  picket: /\bpaling(?=s?\b)/,
  strap: /\b(?:(?:pex|pipe|cable|conduit) )?(?:clip|staple)(?=s?\b)/,
};

export const calledIn = (words: string, item: string): string | null => CALLED[item]?.exec(words)?.[0] ?? null;

const THERE =
  "(?:are|is|'re|'s) (?:(?!not|n't)[a-z]+ ){0,5}?(?:already|here|there|on site|on hand|on the truck|in the (?:yard|shop|garage|van|truck))\\b";

/** "The joists are laying in the yard already", "there's twelve joists under it already". */
export function isThere(words: string, item: string): boolean {
  const named = `(?:${KINDS.find((k) => k.item === item)!.named.source})`;
  // "Joists go every 16 along the house, and that lumber's here already".
  if (
    new RegExp(
      `${named}[^.;]*\\b(?:that|the|this|all the|all that) (?:lumber|wood|stuff|material)(?:'s| is) (?:all )?(?:already )?(?:here|there|on site|on hand)\\b`,
    ).test(words)
  )
    return true;
  return new RegExp(
    `${named}(?: itself| themselves)? ${THERE}|\\bthere(?:'s| is| are)? (?:\\{[NC]\\d+\\} )?${named}(?: (?!not)[a-z]+){0,4} already\\b`,
  ).test(words);
}

/** "5/4x6 boards, joists at 16": the section is of the kind that is named right behind it. */
export const isOthers = (rest: string, item: string, kinds: readonly string[]): boolean =>
  KINDS.some((k) => k.item !== item && kinds.includes(k.item) && new RegExp(`^ (?:${k.named.source})`).test(rest));

export const NUMBER = '(?:<NC>|\\b(a|one|an|single))';
export const numberOf = (said: Said, id: string | undefined, word: string | undefined): number =>
  word ? 1 : figureAt(said, id).value.valueOf();

export function claim(told: RowTold, ...ids: (string | undefined)[]): void {
  for (const id of ids) if (id) told.used.add(Number(id));
}

export const free = (told: RowTold, id: string | undefined) => id !== undefined && !told.used.has(Number(id));
