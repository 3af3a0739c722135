import Fraction from 'fraction.js';
import { readOnce } from '../reading/readOnce.ts';
import type { Said } from '../reading/said.ts';
import { isDone } from '../reading/wanted.ts';
import type { Computed, ComputedLine } from '../types.ts';
import { cutList } from './cutList.ts';
import {
  calledIn,
  clausesOf,
  type Held,
  heldIn,
  itemIn,
  kerfIn,
  type Piece,
  piecesIn,
  type StockLength,
  stockIn,
  tellsStock,
  unreadPieces,
} from './heard.ts';

/** What the notes have told so far of one cut list. All lengths in inches. */
interface List {
  area: string | null;
  item: string | null;
  /** What sticks of that section were called: `board`. */
  called: string | null;
  pieces: Map<string, { length: Fraction; count: number }>;
  stock: StockLength[];
  onHand: Held[];
  kerf: Fraction | null;
  noteIds: string[];
  /** Pieces that no rule could count. */
  unread: string[];
  /** What its notes count or name only as pieces to cut: no goods of their own. */
  counted: Computed['counted'];
}

/** A blade's cut where nobody said: common practice, no source. */
const USUAL_KERF = new Fraction(1, 8);

const CALLS =
  /\bcut ?lists?\b|\bkerf\b|\bblade\b|\bsaw ?cut (?=\{L\d+\})|\b(?:saw|blade) (?:takes|eats)\b|\b(?:fewest|as few|(?:least|smallest) number of) (?:sticks|boards|pieces|lengths|tubes)\b|\bcuts? (?:out of|from)\b|\bcut me\b|\bpieces to cut\b|\b(?:for|per) (?:each|every|the|a) (?:(?:saw )?cut|saw)\b|\b(?:how many|least) (?:sticks|boards|lengths)\b/;
/** "Cut six at 41 and four at 23 out of twelve footers": still to be cut, and the stock is named. */
const CUTS =
  /\bcut (?:me )?(?:\{[NC]\d+\}|an?|one)(?: [a-z-]+){0,3} at \{[^.;]*\b(?:out of|from) |\b(?:need|want|get)\b[^.;]*\bcut (?:at|to) \{[^.;]*\b(?:out of|from) /;
const callsFor = readOnce(({ words }) => CALLS.test(words) || (CUTS.test(words) && !isDone(words)));

/**
 * Cut lists told in notes: what to buy, stock on hand first. A later note adds to the list, changes it or tells of
 * stock. `claimed`: the notes that are about a cut list, which no other take-off reads.
 */
export function cutLines(notes: readonly Said[]): {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
  counted: Computed['counted'];
  claimed: ReadonlySet<string>;
} {
  const lists: List[] = [];
  for (const note of notes) {
    const calls = callsFor(note);
    if (!calls && !lists.length) continue;
    const stands = lists.findLast((l) => l.area === note.area) ?? (lists.length === 1 ? lists[0] : undefined);
    if (!calls && !(stands && about(note, stands))) continue;
    const clauses = clausesOf(note.words);
    const pieces = piecesIn(note, clauses);
    // "Need ten 2x4s for the porch": the same boards, for something else.
    if (!calls && !tellsOfList(note, clauses, pieces)) continue;
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
    counted: lists.flatMap((l) => l.counted),
    claimed: new Set(lists.flatMap((l) => l.noteIds)),
  };
}

const newList = (area: string | null): List => ({
  area,
  item: null,
  called: null,
  pieces: new Map(),
  stock: [],
  onHand: [],
  kerf: null,
  noteIds: [],
  unread: [],
  counted: [],
});

/** A later note that tells of the list's goods, its pieces or what to use first. */
const about = (note: Said, list: List): boolean =>
  (list.item !== null && itemIn(note) === list.item) ||
  note.figures.some((f) => /footer/.test(f.quote)) ||
  /\b(?:use (?:it|them|that|those|these) (?:up )?first|footers?|sticks?|cut list|kerf|blade)\b/.test(note.words);

const tellsOfList = (note: Said, clauses: readonly string[], pieces: readonly Piece[]): boolean =>
  pieces.length > 0 ||
  kerfIn(note) !== null ||
  clauses.some((c) => tellsStock(c) || stockIn(note, c).length > 0) ||
  !/\b(?:need|needs|get|grab|order|buy)\b/.test(note.words);

function take(list: List, note: Said, clauses: readonly string[], pieces: readonly Piece[]): void {
  list.noteIds.push(note.noteId);
  list.item = itemIn(note) ?? list.item;
  list.called = calledIn(note.words) ?? list.called;
  const names = new Set(['cut list', ...(list.item ? [list.item] : []), ...pieces.map((p) => p.called)]);
  for (const thing of names) if (thing) list.counted.push({ thing, noteId: note.noteId });
  for (const { length, count, more } of pieces) {
    const key = length.toFraction();
    const before = more ? (list.pieces.get(key)?.count ?? 0) : 0;
    list.pieces.set(key, { length, count: count + before });
  }
  if (pieces.length > 0) list.unread = unreadPieces(note, clauses, pieces);
  const held = clauses.filter(tellsStock);
  const stock = clauses.filter((c) => !tellsStock(c)).flatMap((c) => stockIn(note, c));
  if (stock.length) list.stock = stock;
  const kerf = kerfIn(note);
  if (kerf) list.kerf = kerf;
  list.onHand.push(...held.flatMap((c) => heldIn(note, c)));
}

function linesOf(list: List): { lines: ComputedLine[]; questions: { noteId: string; ask: string }[] } {
  const item = list.item ?? 'lumber';
  const stock = list.stock.map((s) => s.length);
  const full = stock[0];
  const onHand = list.onHand.flatMap(({ length, count }) => {
    const each = length ?? full;
    return each ? Array<Fraction>(Math.min(count, 100)).fill(each) : [];
  });
  const [unread] = list.unread;
  if (unread)
    return {
      lines: [],
      questions: [
        {
          noteId: list.noteIds.at(-1)!,
          ask: `Cut list of ${item}: is "${unread}" a piece to cut? Nothing ordered until it is known.`,
        },
      ],
    };
  const found = cutList({ pieces: [...list.pieces.values()], onHand, stock, kerf: list.kerf ?? USUAL_KERF });
  if (!found.ok)
    return { lines: [], questions: [{ noteId: list.noteIds.at(-1)!, ask: `Cut list of ${item}: ${found.why}` }] };
  const lines = found.buy.map(
    ({ length, count }): ComputedLine => ({
      item: list.called && /^\d/.test(item) ? `${item} ${list.called}` : item,
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
