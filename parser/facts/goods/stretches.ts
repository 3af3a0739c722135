import type { Quantity } from '../../types.ts';
import { type Chunk, isDeterminer, isGoods, isModal, isNounTerm, isSubjectPronoun } from '../chunks.ts';
import { firstFrom, isSize, joinsPair, type Talk } from '../talk.ts';
import { isNegative } from '../words.ts';
import { assumedIn } from './assumed.ts';
import { type Lot, unitOf } from './lot.ts';
import type { Naming, Placed } from './naming.ts';
import { NOT_GOODS } from './words.ts';

/** So many pieces a name may have. */
const MOST = 7;

/** Words that no name goes over. */
const ENDS =
  /^(?:is|are|was|were|be|been|has|have|had|it|them|him|her|us|me|they|i|we|you|he|she|there|there's|here|so|but|then|cause|because|cuz|if|when|while|which|who|that|what|where|too|also|now|again|already|please|about|like|ain't|isn't|don't|didn't|not|oh|uh|um|okay|ok|yeah|to|for|from|at|by|with|until|till|til|since|behind|before|after|inside|into|onto|than|as|need|needs|needed|come|comes|came|went|goes|going|times|instead|though|tho)$/;
/** Words that stand in a name only between two others: "plug-in alarm", "peel and stick", "coat of blue". */
const WITHIN = /^(?:in|on|off|up|out|over|under|down|and|&|n|of|the)$/;

/** "Half a tube left": how it stands, and no name. */
const LEFT = /^(?:left|remaining|remain|remains)$/;

/**
 * Whole stretches of words behind a count that may be its name, the shortest first: whatever the vocabulary knows of
 * them, over a hyphen or a slash, and over the place where the clause was cut for want of a mark.
 */
export function stretchesOf(talk: Talk, { lot, at }: Placed): Naming[] {
  const { chunks } = talk.frames[at]!;
  const first = lot.own[0]?.start ?? chunks[lot.until - 1]!.end;
  const from = firstFrom(talk.chunks, first);
  const whole = joined(talk, from, lot.amount !== null);
  const ruled = lot.own.at(-1)?.end ?? 0;
  const frameEnd = chunks.at(-1)!.end;
  const out: Naming[] = assumedIn(talk, lot);
  const lead = leadOf(talk, chunks, lot, from);
  for (let until = 1; until <= whole.length; until++) {
    const last = whole[until - 1]!;
    if (NOT_GOODS.test(last.word) && !last.term) continue;
    if (last.kind === 'quantity' || WITHIN.test(last.word) || last.kind === 'mark' || LEFT.test(last.word)) continue;
    const said = whole.slice(0, until);
    const names = said.filter((c) => c.kind !== 'quantity' && c.kind !== 'mark' && c.word !== 'the');
    if (!names.length || names.every(isTold)) continue;
    const behind = whole[until] ?? talk.chunks[firstFrom(talk.chunks, last.end)];
    out.push({
      chunks: names,
      sizes: [...lot.sizes, ...sizesIn(said).filter((q) => !lot.sizes.includes(q))],
      own: true,
      end: last.end,
      features: [...stretchFeatures(lot, said, behind, ruled, frameEnd), ...lead],
    });
  }
  return out;
}

/** What stands between a count and its name: "one gallon of the gray", but "three pieces | the wall behind". */
function leadOf(talk: Talk, chunks: readonly Chunk[], lot: Lot, from: number): string[] {
  const counted = lot.upper ?? lot.amount;
  const after = counted ? counted.end : chunks[lot.from]!.start;
  const between = talk.chunks.slice(firstFrom(talk.chunks, after), from).filter((c) => c.kind !== 'quantity');
  const words = between.map((c) => (c.kind === 'break' ? '|' : c.word)).slice(-3);
  return [`lead ${words.join(' ')}`, `lead ${words.at(-1)} ${unitOf(lot)}`];
}

/** "Two tubes turned up": a verb alone names nothing. */
const isTold = ({ verb, term }: Chunk) =>
  verb !== undefined && term === undefined && (verb.forms.has('past') || verb.forms.has('participle'));

const sizesIn = (chunks: readonly Chunk[]): Quantity[] =>
  chunks.flatMap((c) => (c.quantity && (isSize(c) || c.quantity.group?.kind === 'pair') ? [c.quantity] : []));

/** The words from a place on, as far as one name may go; what a hyphen or a slash joins is one word. */
function joined(talk: Talk, from: number, counted: boolean): Chunk[] {
  const row = talk.chunks;
  const out: Chunk[] = [];
  for (let k = from; k < row.length && out.length < MOST; k++) {
    const c = row[k]!;
    const tight = (a: Chunk | undefined, b: Chunk | undefined) =>
      a !== undefined && b !== undefined && a.end === b.start;
    if (c.kind === 'mark' && /^[-/]$/.test(c.word) && out.length && tight(row[k - 1], c) && tight(c, row[k + 1])) {
      const next = row[++k]!;
      if (next.kind === 'break' || next.kind === 'mark' || next.kind === 'time') break;
      const before = out.pop()!;
      out.push({
        kind: 'word',
        word: `${plain(before)}${c.word}${plain(next)}`,
        start: before.start,
        end: next.end,
        from: before.from,
        until: next.until,
      });
      continue;
    }
    if (c.kind === 'break' || c.kind === 'time' || (c.kind === 'mark' && c.word !== '&')) break;
    if (c.kind === 'quantity' && (c.quantity!.unitKind === 'pack' || (k > from && c.quantity!.more))) break;
    if (joinsPair(row, k)) continue;
    if (c.kind !== 'term' && c.kind !== 'quantity' && (ENDS.test(c.word) || isModal(c) || isSubjectPronoun(c))) break;
    if (c.word !== 'the' && (isDeterminer(c) || isNegative(c.word))) break;
    // "Two doors and caulk", "drywall and screws" are two kinds of goods, "four nuts and washers" may be one name.
    const apart = /^(?:and|&)$/.test(c.word) && isGoods(out.at(-1)) && isGoods(row[k + 1]);
    if (apart && !(counted && /s$/.test(row[k + 1]!.word))) break;
    // "And" opens what comes next where a count follows.
    if (WITHIN.test(c.word) && (!out.length || row[k + 1]?.quantity || isDeterminer(row[k + 1]))) {
      if (c.word === 'of' && row[k + 1]?.word === 'the' && out.length) continue;
      break;
    }
    out.push(c);
  }
  while (out.length && (WITHIN.test(out.at(-1)!.word) || out.at(-1)!.kind === 'quantity')) out.pop();
  return out;
}

const plain = (c: Chunk) => (c.quantity ? c.quantity.quote.toLowerCase() : c.word);

const kindOf = (c: Chunk | undefined) =>
  !c ? '#' : c.term ? c.term.kind : c.verb ? 'verb' : c.quantity ? `Q ${c.quantity.unitKind}` : c.kind;

function stretchFeatures(
  lot: Lot,
  said: readonly Chunk[],
  behind: Chunk | undefined,
  ruled: number,
  frameEnd: number,
): string[] {
  const unit = unitOf(lot);
  const last = said.at(-1)!;
  const cut = last.end < ruled ? 'shorter' : last.end === ruled ? 'same' : ruled ? 'longer' : 'new';
  const next = behind ? (behind.kind === 'word' || behind.kind === 'mark' ? behind.word : kindOf(behind)) : '#';
  const out = [
    'own',
    `own ${lot.kind} ${lot.named}`,
    `cut ${cut}`,
    `cut ${cut} ${unit}`,
    `cut ${cut} named ${lot.named} ends ${kindOf(last)}`,
    `own size ${said.length}`,
    `cut ${cut} size ${said.length}`,
    `ends ${kindOf(last)}`,
    `ends word ${last.word}`,
    `next ${next}`,
    `next ${kindOf(behind)}`,
    `ends ${kindOf(last)} next ${kindOf(behind)}`,
    `opens ${kindOf(said[0])}`,
    `opens word ${said[0]!.word}`,
    `own goods ${Math.min(said.filter(isGoods).length, 3)}`,
    `own pointing ${lot.pointing} ${lot.named}`,
    `own unit ${unit}`,
  ];
  if (last.word.includes('-') || last.word.includes('/')) out.push('ends joined');
  if (last.end > frameEnd) out.push('over clause', `over clause ${kindOf(last)}`);
  if (last.end === frameEnd) out.push('to clause end');
  if (/s$/.test(last.word)) out.push(`ends plural ${unit}`);
  if (isNounTerm(last) && behind && isNounTerm(behind)) out.push('cuts nouns');
  for (const c of said.slice(0, -1)) {
    if (c.kind === 'word' || c.kind === 'mark') out.push(WITHIN.test(c.word) ? `within ${c.word}` : `in ${kindOf(c)}`);
    else out.push(`in ${kindOf(c)}`);
  }
  return out;
}
