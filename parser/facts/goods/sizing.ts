import { type Chunk, isGoods } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isCount, type Lot } from './lot.ts';

/** What goods come in. */
const PACK =
  /^(?:an? |each |per |the )?(?:box|pack|packet|package|bag|sack|card|case|carton|sleeve|bucket|pail|jar|tub|tube|can|tin|bundle|pallet|roll|sheet|stick|square|gallon|gal|pound|lb|litre|liter|quart|bottle)(?:es|s)?$/;
const A = /^(?:an?|each|every|per|the|one)$/;
const TO = /^(?:to|in|per)$/;
const REACHES = /^(?:does|do|goes|go|covers|cover|makes|make|yields|yield|gets)$/;

/** Where "a box" ends that starts at a place, however the reading of quantities took it; null where none does. */
function packFrom(chunks: readonly Chunk[], k: number): number | null {
  const chunk = chunks[k];
  if (!chunk) return null;
  if (chunk.quantity)
    return chunk.quantity.value.equals(1) && /^(?:an?|one|each|per)\b/.test(chunk.word) && PACK.test(chunk.word)
      ? k + 1
      : null;
  return A.test(chunk.word) && PACK.test(chunks[k + 1]?.word ?? '') ? k + 2 : null;
}

/** True where a figure, and at most a word for what it counts, stands right before "(to | in) a box". */
const isFilled = (chunks: readonly Chunk[], k: number): boolean => {
  const before = TO.test(chunks[k - 1]?.word ?? '') ? k - 1 : k;
  return (
    chunks[before - 1]?.quantity !== undefined ||
    (before < k && isGoods(chunks[before - 1]) && chunks[before - 2]?.quantity !== undefined)
  );
};

/** "Two bags of concrete per post": what each takes, and nothing that is there. */
export const isRate = ({ chunks }: Frame, { until }: Lot): boolean => chunks[until]?.word === 'per';

/** "A tube does about thirty feet", "a gallon goes 375": how far a pack goes, which counts none. */
function tellsReach(chunks: readonly Chunk[], from: number): boolean {
  const end = packFrom(chunks, from);
  if (end === null || !REACHES.test(chunks[end]?.word ?? '')) return false;
  return chunks.slice(end + 1, end + 3).some((c) => c.kind === 'quantity' || c.kind === 'number');
}

/**
 * True where the figures of a lot only tell how large goods are or how they come, and count none: "58.67 sq ft a bag",
 * "50 to a box", "75 screws in a tub", "4x8 sheets", "four pieces at 102 inches".
 */
export function onlySizes({ chunks }: Frame, lot: Lot): boolean {
  if (lot.amount?.group?.kind === 'pair' && lot.amount.unitKind === 'pack') return true;
  if (packFrom(chunks, lot.from) !== null && isFilled(chunks, lot.from)) return true;
  if (tellsReach(chunks, lot.from)) return true;
  if (!lot.amount) return false;
  const after = lot.until;
  if (isCount(lot.amount) && TO.test(chunks[after]?.word ?? '') && packFrom(chunks, after + 1) !== null) return true;
  // Pieces with the length that they are cut to: "four pieces at 102 inches", "four at 30 inches".
  const isPieces =
    lot.own.length === 0 || chunks.slice(lot.from, after).some((c) => /\b(?:pieces?|pcs?|lengths?)$/.test(c.word));
  return isPieces && chunks[after]?.word === 'at' && chunks[after + 1]?.quantity?.unitKind === 'length';
}

/** "Stairs 3 risers 7 1/4, tread 11": how a stair is, unless its clause asks for goods. */
export function isStair({ chunks, predicate }: Frame, lot: Lot): boolean {
  const names = chunks.slice(lot.from, lot.until);
  const labelled = /^(?:stairs?|steps|staircase)$/.test(chunks[lot.from - 1]?.word ?? '');
  if (!names.some((c) => STEP.test(c.word)) || (!labelled && /^(?:imperative|owed)$/.test(predicate))) return false;
  const of = chunks.slice(lot.from).find((c) => c.quantity?.unitKind === 'length')?.quantity;
  return of !== undefined && of.value.compare(MOST_RISE) <= 0 && of.value.compare(LEAST_RISE) >= 0;
}

const STEP = /^(?:risers?|treads?|steps?)$/;
/** A riser or a tread in inches. */
const LEAST_RISE = 4;
const MOST_RISE = 14;
