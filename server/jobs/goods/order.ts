import Fraction from 'fraction.js';
import { likeness, wordsOf } from '../../../parser/trade/likeness.ts';
import { packText } from '../../takeoff/packs/index.ts';
import type { Computed, ComputedLine, NoteFacts } from '../../takeoff/types.ts';
import type { Board } from '../list/board.ts';
import { headOf } from '../list/match.ts';
import type { OnHand, OrderLine } from '../types.ts';
import { sizeKey } from './found.ts';
import { onHandOf, openNeed, toBuy } from './left.ts';
import { piecesInside } from './packsGot.ts';
import type { Position } from './position.ts';
import { workOverSince } from './workOver.ts';

const zero = () => new Fraction(0);

/**
 * The order and the stock, from what was said and what was reckoned. A reckoned line stands before a count that was said
 * earlier, for want of its sizes; a count said with the sizes or after them is what somebody wants.
 */
export function settle(
  positions: readonly Position[],
  { lines: computed, packFor, counted }: Pick<Computed, 'lines' | 'packFor' | 'counted'>,
  board: Board,
  isDoubted: (p: Position) => boolean,
  notes: readonly NoteFacts[],
): { order: OrderLine[]; onHand: OnHand[]; questions: { noteId: string; ask: string }[] } {
  const order: OrderLine[] = [];
  const questions: { noteId: string; ask: string }[] = [];
  const reckoned = new Set<Position>();
  for (const line of computed) {
    const words = wordsOf(line.item);
    const alike = positions.filter((p) => likeness(words, p.words) >= 0.75);
    if (alike.some((p) => isSaidOutright(p, line, notes))) continue;
    const position = alike.find((p) => !p.size || !line.size || sizeKey(p.size) === sizeKey(line.size));
    if (position && !isApart(position, line)) reckoned.add(position);
    if (position && isApart(position, line)) questions.push(bothOf(position, line));
    // "Studs, 2x4 eight footers": the section is the reckoned line's own size, no goods beside it.
    for (const p of positions) if (p.need === null && line.size?.split(' ').includes(p.item)) reckoned.add(p);
    for (const p of positions) if (isExtentOf(p, words)) reckoned.add(p);
    if (position?.dropped || position?.met) continue;
    const told = position && isSame(position, words) && !isOnlyCounted(position, counted) ? position : undefined;
    const stock = told && !line.stockUsed ? stockIn(told, line) : zero();
    const inside =
      position && line.unit === 'each' && line.pack?.unit !== position.unit
        ? piecesInside(position, line.amount, packFor)
        : null;
    const net = line.amount.sub(stock).sub(inside?.pieces ?? zero());
    if (net.compare(0) <= 0) continue;
    if (inside?.ask) questions.push(inside.ask);
    const packs = (line.pack ? net.div(line.pack.holds) : net).ceil();
    const [bought, onOrder] =
      told && (!line.pack || told.unit === line.pack.unit) ? [told.bought, told.ordered] : [zero(), zero()];
    const left = packs.sub(bought).sub(onOrder);
    if (left.compare(0) <= 0) continue;
    order.push({
      key: `reckoned:${line.item}:${line.size ?? ''}:${line.area ?? ''}`,
      item: line.item,
      size: line.size,
      specs: line.specs,
      ...(position?.uses.length && { uses: [...position.uses] }),
      quantity: left.toFraction(),
      unit: line.pack?.unit ?? line.unit,
      state: 'to buy',
      because: `${line.working}${less(stock, 'on hand')}${inside?.because ?? ''}${less(bought, 'bought')}${less(onOrder, 'on order')}`,
      counter: position?.counter ?? 'general',
      history: position?.history ?? [],
      needs: {
        exact: net.sub(line.pack ? bought.mul(line.pack.holds) : bought).toFraction(),
        unit: line.unit,
        holds: (line.pack?.holds ?? new Fraction(1)).toFraction(),
      },
    });
  }
  for (const p of positions) {
    if (reckoned.has(p) || !openNeed(p) || isOnlyCounted(p, counted)) continue;
    const over = workOverSince(p, board);
    if (over?.names) continue;
    const wanted = toBuy(p);
    const inside = p.packs ? piecesInside(p, wanted, packFor) : null;
    const pieces = wanted && inside ? wanted.sub(inside.pieces) : wanted;
    if (pieces && pieces.compare(0) <= 0) continue;
    if (inside?.ask) questions.push(inside.ask);
    const pack = pieces && packFor(p.item, p.size, p.unit ?? 'each');
    const packs = pack ? pieces.div(pack.holds).ceil() : pieces;
    const doubt = over ? `; not sure, no. ${over.number} is done since` : isDoubted(p) ? notSure(p) : null;
    order.push({
      key: p.key,
      item: p.item,
      size: p.size,
      specs: p.specs,
      ...(p.uses.length && { uses: [...p.uses] }),
      quantity: packs?.toFraction() ?? null,
      unit: pack ? pack.unit : p.unit,
      state: doubt === null ? 'to buy' : 'unsure',
      because: `${[...p.reasons, ...(pack ? [packText(pack, p.unit ?? 'each')] : [])].join('; ')}${inside?.because ?? ''}${doubt ?? ''}`,
      counter: p.counter,
      history: p.history,
      ...(pack && {
        needs: { exact: pieces.toFraction(), unit: p.unit ?? 'each', holds: pack.holds.toFraction() },
      }),
    });
  }
  const onHand = positions
    .filter((p) => onHandOf(p).compare(0) > 0)
    .map((p) => ({ item: p.item, size: p.size, quantity: onHandOf(p).toFraction(), unit: p.unit }));
  for (const { item, size, packs } of positions)
    if (packs) onHand.push({ item, size, quantity: packs.count.toFraction(), unit: packs.unit });
  return { order, onHand, questions };
}

/**
 * "Need two more sheets of half inch, four by eight": a count asked for as goods are sold, more than the sizes of its note
 * come to; or asked for after them.
 */
function isSaidOutright(p: Position, line: ComputedLine, notes: readonly NoteFacts[]): boolean {
  if (line.stockUsed || p.need === null || !wordsOf(line.item).has(headOf(p.item))) return false;
  const unit = p.unit ?? 'each';
  const sold = line.pack?.unit ?? line.unit;
  const more = p.need.compare((line.pack ? line.amount.div(line.pack.holds) : line.amount).ceil()) > 0;
  const inPacks = unit !== sold && sold === 'each' && PACKS.test(unit);
  return p.history.some(({ what, noteId, words }) => {
    const at = notes.findIndex((note) => note.noteId === noteId);
    if (what !== 'need' || words === null || at < 0) return false;
    const [lead] = notes[at]!.text.split(words);
    if (line.noteIds.includes(noteId!)) return inPacks || (unit === sold && more && ASKS_FOR.test(lead!));
    return unit === sold && ASKS_FOR.test(lead!) && notes.slice(at).every((n) => !line.noteIds.includes(n.noteId));
  });
}
const PACKS = /^(?:box|bag|roll|tube|bucket|pail|tub|case|carton|packet)$/;
const ASKS_FOR =
  /\b(?:need|get|grab|order|buy|want|short|pick up|make (?:it|that)|send)(?: (?:another|about|me|us))*\s*$/i;

/** Why nobody can be sure that it is still to buy. */
const notSure = ({ wanted }: Position) => (wanted ? `; not sure, last asked for ${wanted.at.slice(0, 10)}` : '');

/** A count said in another note than the cut list of the same boards: nobody said that it is for the list's own pieces. */
const isApart = (p: Position, { stockUsed, noteIds }: ComputedLine): boolean =>
  stockUsed &&
  openNeed(p) &&
  p.need !== null &&
  p.history.some((e) => e.what === 'need' && e.noteId !== null && !noteIds.includes(e.noteId));

const bothOf = (p: Position, { item, noteIds }: ComputedLine) => ({
  noteId: p.history.findLast((e) => e.what === 'need')?.noteId ?? noteIds.at(-1) ?? '',
  ask: `${p.need!.toFraction(true)} ${p.item.replace(/s$/, '')}s were asked for, and the cut list takes its own ${item}s: both stand on the order. Are they for the same pieces?`,
});

/** "42 square feet of tile", of which "three by six subway" is reckoned: its extent, no goods beside it. */
const isExtentOf = (p: Position, words: ReadonlySet<string>): boolean =>
  /^(?:sq ft|sq m|sq yd)$/.test(p.unit ?? '') && !p.size && [...p.words].every((w) => words.has(w));

/** "Rail posts" are no rails: what goods are called last is in the reckoned line's name. */
const isSame = (p: Position, words: ReadonlySet<string>): boolean =>
  [...wordsOf(headOf(p.item))].every((word) => words.has(word));

/** Nothing but a count for other goods told of it. */
const isOnlyCounted = (p: Position, counted: Computed['counted']): boolean =>
  counted.some(
    ({ thing, noteId }) => likeness(wordsOf(thing), p.words) >= 0.75 && p.history.every((e) => e.noteId === noteId),
  );

const less = (amount: Fraction, what: string) =>
  amount.compare(0) > 0 ? `; less ${amount.toFraction(true)} ${what}` : '';

/** Stock in the line's own unit: the pack's, or the amount's. */
function stockIn(p: Position, line: ComputedLine): Fraction {
  const stock = p.have.sub(p.returned);
  if (stock.compare(0) <= 0) return zero();
  if (line.pack && p.unit === line.pack.unit) return stock.mul(line.pack.holds);
  return p.unit === line.unit || p.unit === null || (p.unit === 'each' && !line.pack) ? stock : zero();
}
