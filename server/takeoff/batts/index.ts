import Fraction from 'fraction.js';
import { battsOf, baysOf } from '../calculators/insulation.ts';
import type { Counted } from '../calculators/spacing.ts';
import { readOnce } from '../reading/readOnce.ts';
import { rValueIn } from '../reading/rValue.ts';
import { figureAt, lengthIn, type Said, saying } from '../reading/said.ts';
import { isDone } from '../reading/wanted.ts';
import type { ComputedLine } from '../types.ts';

const NAMED = /\b(?:insulation|insulate|batts?)\b|\br[- ]?\d{2}\b/;
/** Batts and the spacing of studs tell bays as well. */
const BY_BAY = /\b(?:bays?|cavit(?:y|ies))\b|^(?=.*\bbatts?\b)(?=.*\} (?:on center|oc|o\.c\.))(?=.*\bstuds?\b)/;
const BAYS = saying('<NC> (?:[a-z]+ )?(?:bays?|cavit(?:y|ies))\\b');
const EACH_BAY = saying(
  '(?:<NC>|\\b(one|a))(?: batts?)?(?: long)? (?:to|per|in|for|a) ?(?:a|the|each|every)? (?:bay|cavity)\\b',
);
const HEIGHT = [
  saying('(?<!x )<LN>(?: (?:foot|inch|in))? (?:tall|high|studs?|bays)\\b'),
  saying('\\b(?:studs?|bays?|walls?)(?: (?:are|is|at|all|run|cut))* <LN>(?! ?(?:on|oc|wide|x|by))'),
];
const BATT = [
  saying('<LN>(?: (?:wide|inch|in))* ?(?:x|by) ?<LN>(?: long)?'),
  saying('\\bbatts?(?: (?:are|is|come|at))* (?:<LN> wide(?: and| by)? )?<LN>(?: (?:inch|in))? long'),
];
const SPACING = saying('<L> (?:on center|oc|o\\.c\\.)');
const RUN = saying(
  "<L>(?: (?:long|of))?(?: {N\\d+} ?x ?{N\\d+})? (?:stud )?(?:wall|run)\\b|\\bwall(?:'s| is)?(?: about)? <L>(?: long)?\\b",
);

/** It wants insulation by the bay. */
const speaks = readOnce(({ words }) => NAMED.test(words) && BY_BAY.test(words) && !isDone(words));

/**
 * Insulation by the bay: batts that the bays take, one over another. The bays are counted, or reckoned from a wall's
 * length and the spacing of its studs. `claimed`: the notes that are about it, which no other take-off reads.
 */
export function battLines(notes: readonly Said[]): {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
  claimed: ReadonlySet<string>;
} {
  const lines: ComputedLine[] = [];
  const questions: { noteId: string; ask: string }[] = [];
  const claimed = new Set<string>();
  for (const said of notes) {
    if (!speaks(said)) continue;
    const bays = baysIn(said);
    if (!bays) continue;
    claimed.add(said.noteId);
    const refused = (why: string) => questions.push({ noteId: said.noteId, ask: `batts: ${why}` });
    if (!bays.ok) {
      refused(bays.why);
      continue;
    }
    const each = eachIn(said);
    const found = typeof each === 'string' ? { ok: false as const, why: each } : battsOf(bays.count, each);
    if (!found.ok) {
      refused(found.why);
      continue;
    }
    lines.push(lineOf(said, found, bays.working));
  }
  return { lines, questions, claimed };
}

function baysIn(said: Said): Counted | { ok: false; why: string } | null {
  const counted = BAYS.exec(said.words);
  if (counted) {
    const count = figureAt(said, counted[1]).value.valueOf();
    return { ok: true, count, working: '' };
  }
  const [run, spacing] = [lengthOf(said, RUN), lengthOf(said, SPACING)];
  return run && spacing ? baysOf(run, spacing) : null;
}

/** Batts of one bay as said, else by its height and the batt's length; one where neither was said. */
function eachIn(said: Said): { each: number } | { height: Fraction; batt: Fraction } | string {
  const m = EACH_BAY.exec(said.words);
  if (m) return { each: m[1] ? figureAt(said, m[1]).value.valueOf() : 1 };
  const batt = BATT.map((p) => p.exec(said.words)).find((found) => found !== null && isLong(said, found.at(-1)));
  const length = batt && lengthIn(figureAt(said, batt.at(-1)), 'in', 'in');
  const height = HEIGHT.map((p) => lengthOf(said, p, batt?.slice(1))).find((h) => h !== null);
  if (!height) return 'how tall is a bay?';
  return length ? { height, batt: length } : 'how long is a batt?';
}

/** No batt is a foot long: `2x6` are the studs. */
const isLong = (said: Said, id: string | undefined): boolean =>
  (lengthIn(figureAt(said, id), 'in', 'in')?.compare(24) ?? -1) >= 0;

/** A bare height of a dozen or less is feet. */
function lengthOf(said: Said, pattern: RegExp, taken: readonly (string | undefined)[] = []): Fraction | null {
  const id = pattern.exec(said.words)?.slice(1).find(Boolean);
  if (id === undefined || taken.includes(id)) return null;
  const figure = figureAt(said, id);
  return lengthIn(figure, 'in', figure.value.compare(12) <= 0 ? 'ft' : 'in');
}

const lineOf = (said: Said, found: Counted, bays: string): ComputedLine => ({
  item: 'insulation batt',
  size: rValueIn(said),
  specs: [],
  area: said.area,
  amount: new Fraction(found.count),
  unit: 'each',
  pack: null,
  stockUsed: false,
  working: [bays, found.working].filter(Boolean).join('; '),
  assumptions: [],
  source: 'arithmetic from what was said',
  noteIds: [said.noteId],
});
