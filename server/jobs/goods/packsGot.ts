import Fraction from 'fraction.js';
import { unitWord } from '../../../parser/quantities/containers.ts';
import type { Material } from '../../../parser/types.ts';
import type { PackFor } from '../../takeoff/types.ts';
import type { PacksGot, Position } from './position.ts';

/** What small goods come in: how many to each, only the pack tells. */
const PACK = /^(?:box|pack|packet|package|bag|card|case|carton|sleeve|bucket|jar|tub|bundle|pallet|lb)$/;

const isPiece = (unit: string | null) => unit === 'each' || unit === 'piece';

/** "Got 2 boxes of screws" where screws are wanted by the piece: kept as boxes, never as two. True where it was that. */
export function takePacks(p: Position, { unit, status }: Material, amount: Fraction | null, noteId: string): boolean {
  if (!amount || !unit || !PACK.test(unit) || !isPiece(p.unit)) return false;
  const before = p.packs?.unit === unit ? p.packs.count : new Fraction(0);
  const left = before.sub(amount);
  if (status === 'have') p.packs = { unit, count: amount, noteId };
  else if (status === 'bought') p.packs = { unit, count: before.add(amount), noteId };
  else if (status === 'used' || status === 'returned')
    p.packs = left.compare(0) > 0 ? { unit, count: left, noteId } : null;
  else return false;
  return true;
}

/** Goods of which only packs were told are wanted by the piece now: the packs stay packs. */
export function countByPiece(p: Position, { unit, status }: Material, onHand: Fraction, noteId: string): void {
  if (status !== 'need' || !isPiece(unit) || p.need !== null || !p.unit || !PACK.test(p.unit)) return;
  const none = new Fraction(0);
  if (onHand.compare(0) > 0) p.packs = { unit: p.unit, count: onHand, noteId };
  Object.assign(p, { unit, bought: none, have: none, used: none, returned: none });
}

/** What the packs at hand hold, the working of it, and what has to be asked first. */
export interface Inside {
  pieces: Fraction;
  because: string;
  ask: { noteId: string; ask: string } | null;
}

/** Pieces in the packs at hand; none are counted on until somebody says how many one holds. */
export function piecesInside(p: Position, wanted: Fraction | null, packFor: PackFor): Inside | null {
  const { packs } = p.unit && PACK.test(p.unit) ? { packs: asPacks(p) } : p;
  if (!packs || packs.count.compare(0) <= 0) return null;
  const many = packs.count.compare(1) > 0;
  const told = `${packs.count.toFraction(true)} ${unitWord(packs.unit, many)}`;
  const pack = packFor(p.item, p.size, 'each');
  if (pack?.unit === packs.unit) {
    const pieces = packs.count.mul(pack.holds);
    return { pieces, because: `; less ${pieces.floor().toFraction()} in ${told} on hand`, ask: null };
  }
  return {
    pieces: new Fraction(0),
    because: `; ${told} on hand, not taken off: how many a ${packs.unit} holds was not said`,
    ask: {
      noteId: packs.noteId,
      ask: `How many ${p.item}s does a ${packs.unit} hold? There ${many ? 'are' : 'is'} ${told} on hand${wanted ? `, and ${wanted.ceil().toFraction()} are needed` : ''}.`,
    },
  };
}

/** Goods told only by the pack, where the trade reckons them by the piece. */
const asPacks = (p: Position): PacksGot => ({
  unit: p.unit!,
  count: p.have.add(p.bought).sub(p.used).sub(p.returned),
  noteId: p.history.at(-1)?.noteId ?? '',
});
