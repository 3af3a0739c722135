import type { Material, Quantity } from '../../types.ts';
import type { Chunk } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { firstFrom, isSize, joinsPair, type Talk } from '../talk.ts';
import { sizesText } from './fact.ts';
import type { Lot } from './lot.ts';
import { SIDE } from './words.ts';

/** Words that a size stands before, in what is said behind goods: "half inch nap", "three fifty count". */
export const TELLS_WHICH =
  /^(?:nap|naps|grit|gauge|panel|panels|lite|lites|core|hand|handed|finish|head|thread|count|ct|rated)$/;
/** What comes in a pack has its weight or volume behind its name: "1 bag grout light grey 5kg". */
const PACKED = /^(?:bag|sack|tub|bucket|pail|tin|can|box|bottle|jug|tube|sausage)$/;

/**
 * What is said behind goods that are asked for, between commas, to tell which: "five sets, two and a quarter", "one GFI,
 * twenty amp, white". Sizes and finishes are theirs; a figure that is taken is no reading.
 */
export function takeApposed(talk: Talk, facts: readonly Material[], used: Set<Quantity>): void {
  for (const fact of facts) {
    for (let from = firstFrom(talk.chunks, fact.end); ; ) {
      const said = behind(talk.chunks, from, fact);
      if (!said.length || facts.some((f) => f !== fact && f.start < said.at(-1)!.end && said[0]!.start < f.end)) break;
      take(talk, fact, said, used);
      from = firstFrom(talk.chunks, fact.end);
    }
  }
}

/** The words behind goods up to the next mark or "and", where they only tell which goods; else none. */
function behind(row: readonly Chunk[], from: number, fact: Material): Chunk[] {
  const comma = row[from]?.kind === 'mark' && row[from]!.word === ',';
  if (comma && fact.status !== 'need' && fact.status !== 'ordered') return [];
  let k = comma ? from + 1 : from;
  const first = k;
  for (; row[k] && row[k]!.kind !== 'mark' && row[k]!.kind !== 'break' && !endsAt(row, k); k++) {
    const c = row[k]!;
    const tells = comma
      ? isFigure(row, k) ||
        isOfSides(row, k) ||
        joinsPair(row, k) ||
        c.term?.kind === 'finish' ||
        isKind(row, k) ||
        c.word === 'the'
      : isKind(row, k) ||
        isOfSides(row, k) ||
        (c.quantity !== undefined && TELLS_WHICH.test(row[k + 1]?.word ?? '')) ||
        ((c.quantity?.unitKind === 'weight' || c.quantity?.unitKind === 'volume') && PACKED.test(fact.unit ?? ''));
    if (!tells) return [];
  }
  const said = row.slice(first, k);
  return said.some((c) => c.word !== 'the') ? said : [];
}

/** True where a lot is only the weight or volume of the packs right before it: "2 tubs mud 20kg". */
export const isPackSize = ({ chunks }: Frame, { amount, own, from }: Lot, before: Material | undefined): boolean =>
  before !== undefined &&
  !own.length &&
  /^(?:weight|volume)$/.test(amount?.unitKind ?? '') &&
  PACKED.test(before.unit ?? '') &&
  chunks[from - 1]?.end === before.end;

/** Where what is said behind goods goes on to something else: "and" before the next goods, what they are for. */
const endsAt = (row: readonly Chunk[], k: number) =>
  row[k]!.word === 'for' || (row[k]!.word === 'and' && !isSide(row, k + 1));

/** A figure that is told to be a side: "two foot wide", "forty tall". */
const isSide = (row: readonly Chunk[], k: number) =>
  /^length$|^$/.test(row[k]?.quantity?.unitKind ?? '') &&
  row[k]?.quantity !== undefined &&
  SIDE.test(row[k + 1]?.word ?? '');

/** A side, the word for it behind its figure, or what joins it to the next. */
const isOfSides = (row: readonly Chunk[], k: number) =>
  isSide(row, k) ||
  (SIDE.test(row[k]!.word) && row[k - 1]?.quantity !== undefined) ||
  (/^(?:by|x|and)$/.test(row[k]!.word) && isSide(row, k + 1));

const isFigure = (row: readonly Chunk[], k: number) =>
  row[k]!.quantity !== undefined &&
  (isSize(row[k]!) ||
    row[k]!.quantity!.group?.kind === 'pair' ||
    row[k]!.quantity!.unitKind === 'voltage' ||
    TELLS_WHICH.test(row[k + 1]?.word ?? ''));

const isKind = (row: readonly Chunk[], k: number) =>
  TELLS_WHICH.test(row[k]!.word) ||
  (row[k]!.notQuantity !== undefined && TELLS_WHICH.test(row[k]!.word.split(' ').at(-1)!));

function take(talk: Talk, fact: Material, said: readonly Chunk[], used: Set<Quantity>): void {
  const figures = said.flatMap((c) => (c.quantity ? [c.quantity] : []));
  const sizes = figures.filter(
    (q) =>
      q.unitFrom !== 'none' || q.group?.kind === 'pair' || said.some((c, k) => c.quantity === q && isSide(said, k)),
  );
  for (const q of figures) used.add(q);
  if (sizes.length) fact.size = [fact.size, sizesText(sizes)].filter(Boolean).join(' x ');
  for (const c of said) if (c.term?.kind === 'finish' && !fact.specs.includes(c.word)) fact.specs.push(c.word);
  fact.end = said.at(-1)!.end;
  fact.quote = talk.text.slice(fact.start, fact.end);
}

/** "A piece of poplar, eight footer, two of them": how many of what was just asked for as one. */
export function countedBehind(talk: Talk, facts: Material[]): void {
  for (let k = facts.length - 1; k > 0; k--) {
    const [one, more] = [facts[k - 1]!, facts[k]!];
    const points = /^\S+ of (?:them|'?em|those|these)$/i.test(more.quote) && one.item === more.item;
    if (!points || one.quantity !== 1 || one.status !== more.status || more.start - one.end > 2) continue;
    Object.assign(one, { quantity: more.quantity, exact: more.exact, end: more.end });
    one.quote = talk.text.slice(one.start, one.end);
    facts.splice(k, 1);
  }
}

const FITTING = /\b(?:elbow|tee|coupling|wye|reducer|cap|collar|connector|45|90|ninety|forty five)$/;
const RUN = /\b(?:pipe|duct|conduit|tubing|tube)$/;

/** "Four inch pipe, two lengths and an elbow": a fitting listed right behind its pipe is of the pipe's bore. */
export function fitFittings(facts: readonly Material[]): void {
  facts.forEach((fact, k) => {
    const run = facts[k - 1];
    if (!run?.size || fact.size || fact.status !== run.status || fact.start - run.end > NEAR) return;
    const bore = /^[\d/-]+ (?:in|mm)\b/.exec(run.size);
    if (bore && FITTING.test(fact.item) && RUN.test(run.item)) fact.size = bore[0];
  });
}

/** So many letters apart goods stand in one list. */
const NEAR = 8;
