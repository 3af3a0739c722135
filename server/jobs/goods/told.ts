import { isSpoiled } from '../../../parser/facts/flaws/spoiled.ts';
import { likeness, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { Fact, Material } from '../../../parser/types.ts';
import { sentenceFrom } from '../meeting.ts';
import { NONE } from './amounts.ts';
import { delivered } from './delivered.ts';
import { onHandOf, openNeed, toBuy } from './left.ts';
import { lastNamed, meant } from './named.ts';
import { type Piece, packOf, piecesOf } from './pieces.ts';
import type { Goods, Position } from './position.ts';
import { countsMade, recounted } from './recounted.ts';
import { COUNTED, LEADS, POINTS, unwantedIn } from './unwanted.ts';
import {
  ALL,
  ALL_GOT,
  ALL_USED,
  AND_TOO,
  BOUGHT,
  COMES,
  FOUND,
  GONE,
  HAVE_THE,
  LISTS,
  MAY_TELL,
  ON_THE_WAY,
  ORDERS,
  RAN,
  STANDS,
  STILL_TO_GET,
  STILL_WANTED,
  STOCK,
  SUPPLIED,
  USED_UP,
} from './words.ts';

/** What words without a count say of goods that stand on the list: only the list knows what "both tubes" are. */
export interface GoodsTold {
  position: Position;
  fact: Material;
  /** Nobody has to buy it. */
  drops?: true;
}

/** Whether words may tell of goods that stand on the list. */
export const pointsAtGoods = (text: string): boolean =>
  MAY_TELL.test(text.toLowerCase()) || unwantedIn(text.toLowerCase()).length > 0;

/** What a note tells of goods on the list, and what of its own facts that settles. */
export interface ToldOfGoods {
  told: readonly GoodsTold[];
  /**
   * The fact stands in a list of what was fetched: bought, whatever it was read as; null where the list says it better.
   * Null as a whole where every fact stays as it was read.
   */
  read: ((fact: Material) => Material | null) | null;
}

/** What a list of goods goes on to: "the sonotubes they only had six so two are coming". */
const THEY = / (?:they|he|she|but)\b.*$/;

const LEFT_OVER = /\bleft ?over\b|\bleft$|\bspare\b/;

export const NOTHING_TOLD: ToldOfGoods = { told: [], read: null };

/** Goods of the list that a note tells of in words that point back: fetched, ordered, come, gone, in the van. */
export function goodsTold(text: string, facts: readonly (Fact | null)[], goods: Goods): ToldOfGoods {
  const said = lowered(text);
  const out: GoodsTold[] = [];
  const taken = facts.filter((f): f is Material => f?.kind === 'material' && f.status !== 'mentioned');
  const tell = (
    position: Position,
    status: Material['status'],
    start: number,
    end: number,
    count: number | null,
    counts: Material['counts'] = 'plain',
  ) => {
    const own = fetched.find((piece) => piece.start <= start && end <= piece.end);
    const counted =
      !own && taken.some((f) => f.start < end && start < f.end && (f.quantity !== null || count === null));
    if (counted || out.some((o) => o.position === position && (o.drops || o.fact.status === status))) return;
    out.push({ position, fact: factOf(position, status, text, start, end, count, counts) });
  };
  const unwanted = unwantedIn(said);
  for (const { named, start, end, before, from } of unwanted) {
    const position =
      meant(goods, wordsOf(named.replace(LEADS, '').replace(COUNTED, '')), openNeed) ??
      (POINTS.test(named) ? lastNamed(goods, said.slice(from, start), before) : null);
    if (position && !out.some((o) => o.position === position))
      out.push({ position, fact: factOf(position, 'mentioned', text, start, end, null, 'plain'), drops: true });
  }
  const fetched: (Piece & { told: boolean })[] = [];
  for (const { position, status, count, start, end } of recounted(said, goods)) {
    fetched.push({ words: position.words, count, pack: null, start, end, told: true });
    tell(position, status, start, end, count, status === 'need' ? 'total' : 'plain');
  }
  for (const match of [LISTS, SUPPLIED, RAN, ALL_GOT, FOUND, HAVE_THE].flatMap((list) => [...said.matchAll(list)])) {
    if (
      /^ (?:everything|all of it|it all|the lot|the (?:whole |entire )?list)\b|\bcoming\b|\bon (?:hold|order)\b/.test(
        match[1]!.replace(THEY, ''),
      )
    )
      continue;
    let before: { position: Position; fact: Material } | null = null;
    for (const piece of piecesOf(match[1]!, match.index + match[0].lastIndexOf(match[1]!))) {
      // "Got one stick left over": there, and not fetched. "Got four busted tiles": amiss, and not fetched either.
      const own = said.slice(piece.start, piece.end);
      if (LEFT_OVER.test(own) || own.split(' ').some(isSpoiled)) continue;
      const pack = packOf(piece);
      // "Mortar, 3 bags": the count of what was named just before.
      if (before && pack && before.position.unit && stem(before.position.unit) === pack && piece.count !== null) {
        Object.assign(before.fact, { quantity: piece.count, exact: String(piece.count) });
        fetched.push({ ...piece, told: true });
        continue;
      }
      const position = meant(
        goods,
        piece.words,
        (p) => openNeed(p) || p.ordered.compare(0) > 0,
        piece.pack,
        piece.count,
      );
      // "Got 2 boxes of deck screws", where they are wanted by the piece: the note's own words say it better.
      const packed = taken.some((f) => within(f, piece) && f.unit !== null && f.unit !== position?.unit && f.quantity);
      const told = position !== null && !(packed && position.unit === 'each');
      fetched.push({ ...piece, told });
      if (position && told) tell(position, 'bought', piece.start, piece.end, piece.count);
      const last = out.at(-1);
      before = position && last?.position === position ? last : null;
    }
  }
  for (const { 1: name, index, 0: whole } of said.matchAll(AND_TOO)) {
    const after = fetched.some(({ end }) => end <= index && !/[.;!?\n][^.;!?\n]*[.;!?\n]/.test(said.slice(end, index)));
    const position = after ? meant(goods, wordsOf(name!), openNeed) : null;
    if (position) tell(position, 'bought', index + whole.indexOf(name!), index + whole.length, null);
  }
  for (const { position, status, count, unwanted: over, start, end } of delivered(said, goods)) {
    fetched.push({ words: position.words, count, pack: null, start, end, told: true });
    tell(position, status, start, end, count);
    if (over) out.push({ position, fact: factOf(position, 'mentioned', text, start, end, null, 'plain'), drops: true });
  }
  for (const match of [STILL_WANTED, STILL_TO_GET].flatMap((says) => [...said.matchAll(says)])) {
    const position = meant(goods, wordsOf(match[1]!), openNeed);
    if (position) tell(position, 'need', match.index, match.index + match[0].length, null);
  }
  for (const match of said.matchAll(ORDERS)) {
    const from = sentenceFrom(said, match.index);
    const after = /^[^.;!?,\n]*/.exec(said.slice(match.index + match[0].length))![0];
    const own = piecesOf(after, match.index + match[0].length).find((p) => meant(goods, p.words, openNeed));
    const position = own
      ? meant(goods, own.words, openNeed)
      : lastNamed(goods, said.slice(from, match.index), said.slice(0, from));
    if (position) tell(position, 'ordered', match.index, match.index + match[0].length, own?.count ?? null);
  }
  for (const { 0: whole, 1: name, index } of said.matchAll(ON_THE_WAY)) {
    const [piece] = piecesOf(name!, index + whole.indexOf(name!));
    const position = piece && meant(goods, piece.words, openNeed);
    if (position) tell(position, 'ordered', index, index + whole.length, piece.count);
  }
  for (const match of said.matchAll(COMES)) {
    const at = match.index + match[0].indexOf(match[1]!);
    const [piece] = piecesOf(match[1]!, at);
    const position = piece && meant(goods, piece.words, (p) => p.ordered.compare(0) > 0 || openNeed(p));
    const due = position && (position.ordered.compare(0) > 0 ? position.ordered.valueOf() : null);
    if (position) tell(position, 'bought', at, at + match[1]!.length, piece.count ?? due ?? null);
  }
  for (const match of said.matchAll(BOUGHT)) {
    const at = match.index + match[0].indexOf(match[1]!);
    for (const piece of piecesOf(match[1]!, at)) {
      const position = meant(goods, piece.words, openNeed, piece.pack);
      if (position) tell(position, 'bought', piece.start, piece.end, piece.count);
    }
  }
  for (const match of [...said.matchAll(STOCK), ...said.matchAll(STANDS)]) {
    const at = match.index + match[0].indexOf(match[1]!);
    const [piece] = piecesOf(match[1]!, at);
    const position = piece && meant(goods, piece.words, openNeed);
    if (!position) continue;
    // "There's a bag of toggle bolts in the shop", where they are wanted by the piece.
    const pack = position.unit === 'each' ? piece.pack : null;
    tell(position, 'have', at, at + match[1]!.length, pack ? (piece.count ?? 1) : null);
    const last = out.at(-1);
    if (pack && last?.position === position) last.fact.unit = pack;
  }
  for (const pattern of [GONE, USED_UP])
    for (const match of said.matchAll(pattern)) {
      const position = meant(goods, wordsOf(match[1]!), (p) => onHandOf(p).compare(0) > 0);
      if (position) tell(position, 'used', match.index, match.index + match[0].length, onHandOf(position).valueOf());
    }
  // "Purple board's used up", wanted and never told as bought: it was there, and nothing of it is left to buy.
  for (const { 0: whole, 1: name, index } of said.matchAll(ALL_USED)) {
    const position = meant(goods, wordsOf(name!), (p) => openNeed(p) || onHandOf(p).compare(0) > 0);
    if (!position) continue;
    const due = (toBuy(position) ?? NONE).add(onHandOf(position));
    if (due.compare(0) > 0) tell(position, 'used', index, index + whole.length, due.valueOf());
  }
  for (const { 0: whole, 1: but, index } of said.matchAll(ALL)) {
    const left = but === undefined ? [] : [...goods.all].filter((p) => likeness(wordsOf(but), p.words) >= 0.5);
    for (const p of goods.all)
      if (openNeed(p) && !left.includes(p)) tell(p, 'bought', index, index + whole.length - (but?.length ?? 0), null);
  }
  const inList = (fact: Material) => fetched.find((piece) => within(fact, piece));
  return {
    told: out,
    read: (fact) => {
      // "He's leaving us a gallon of his primer".
      if (fact.status === 'need' && unwanted.some((u) => u.start < fact.start && fact.end <= u.end)) return null;
      const piece = fact.status === 'ordered' || fact.status === 'returned' ? undefined : inList(fact);
      if (!piece) return fact;
      return piece.told ? null : { ...fact, status: 'bought' };
    },
  };
}

/** Counts made anew that only the goods of the note itself tell of: "one gfi and a plate. Actually make it two gfis and two plates". */
export const recountedBehind = (text: string, goods: Goods): GoodsTold[] =>
  countsMade(lowered(text), goods).map(({ position, status, count, start, end }) => ({
    position,
    fact: factOf(position, status, text, start, end, count, 'total'),
  }));

const within = (fact: Material, piece: Piece) => piece.start < fact.end && fact.start < piece.end;

function factOf(
  position: Position,
  status: Material['status'],
  text: string,
  start: number,
  end: number,
  count: number | null,
  counts: Material['counts'],
): Material {
  const due = toBuy(position);
  const whole = count === null && status === 'bought' && due !== null && due.compare(0) > 0 ? due : null;
  const exact = whole?.toFraction() ?? (count === null ? null : String(count));
  return {
    kind: 'material',
    item: position.item,
    size: position.size,
    specs: [],
    quantity: whole?.valueOf() ?? count,
    exact,
    atLeast: null,
    unit: position.unit,
    status,
    counts,
    quote: text.slice(start, end),
    start,
    end,
    area: null,
    confidence: 0.8,
    rule: `list/${status}`,
  };
}
