import { singular } from '../../trade/vocabulary.ts';
import type { Quantity } from '../../types.ts';
import type { Chunk } from '../chunks.ts';
import { isDeterminer, isGoods, isNominal, isPreposition } from '../chunks.ts';
import { countWhile, isSize, type Talk } from '../talk.ts';
import { type Lot, unitOf } from './lot.ts';
import type { Phrase } from './mentioned.ts';
import type { Naming, Placed, Told } from './naming.ts';

/** How far back, in clauses, a lot may point, and how far back its fuller name may stand. */
const REACH = 8;
const FULLER_REACH = 60;

/** Phrases of so many clauses up to one, without a look at the others of a long note. */
const upTo = (phrases: readonly Phrase[], at: number, reach: number): Phrase[] =>
  phrases.slice(
    countWhile(phrases, (p) => p.at < at - reach),
    countWhile(phrases, (p) => p.at <= at),
  );

/** What was named before a lot and may be meant by it, the nearest first. */
export function phrasesMeant(talk: Talk, placed: Placed, phrases: readonly Phrase[], told: readonly Told[]): Naming[] {
  const { lot, at } = placed;
  const start = talk.frames[at]!.chunks[lot.from]!.start;
  const inReach = (there: number) => there <= at && there >= at - REACH;
  const near = upTo(phrases, at, REACH);
  const known = told.filter(({ naming, placed: own }) => naming.own && inReach(own.at));
  const strange = known
    .filter(
      ({ naming: { chunks } }) => !near.some((p) => p.chunks.some((c) => chunks.some((n) => n.start === c.start))),
    )
    .map(({ placed: { lot: l, at: there }, naming }) => ({
      chunks: naming.chunks,
      at: there,
      from: l.from,
      until: l.until,
    }));
  const before = [...near, ...strange]
    .filter((p) => p.chunks.at(-1)!.end <= start)
    .sort((a, b) => a.chunks[0]!.start - b.chunks[0]!.start);
  return before.reverse().map((p, rank) => {
    const modifiers = lot.named ? [] : lot.own;
    // Goods that were counted before have their whole name there.
    const head = p.chunks.at(-1)!;
    const counted = known.find(
      ({ naming }) => naming.chunks[0]!.start <= head.start && head.end <= naming.chunks.at(-1)!.end,
    );
    const name = counted ? counted.naming.chunks : p.chunks.filter((c) => c.kind !== 'quantity');
    return {
      chunks: [...modifiers.filter((m) => !name.some((c) => c.word === m.word)), ...name],
      sizes: sizesMeant(lot, p, talk.frames[p.at]!.chunks),
      own: false,
      features: [...phraseFeatures(talk, placed, p, rank), ...toldFeatures(talk, placed, p, told)],
    };
  });
}

/** "Four inch pipe, two five foot lengths": a piece's length goes with the size of what it is of. */
function sizesMeant({ sizes, amount, pack }: Lot, { chunks, until }: Phrase, row: readonly Chunk[]): Quantity[] {
  const before = chunks.flatMap((c) => (c.quantity && isSize(c) ? [c.quantity] : []));
  // "2x8 PT x 12ft - need 14".
  const long = /^(?:x|by|@)$/.test(row[until]?.word ?? '') ? row[until + 1]?.quantity : undefined;
  if (!sizes.length && long?.unitKind === 'length' && chunks.some((c) => c.term && isNominal(c.term.name)))
    return [long];
  if (!sizes.length) return before;
  return /^(?:length|stick|piece|footer)$/.test(pack ?? amount?.unit ?? '') && before.length === 1
    ? [...before, ...sizes]
    : sizes;
}

const kindOf = (c: Chunk | undefined) => (c ? (c.term?.kind ?? (c.notQuantity ? 'code' : 'word')) : 'none');

/** Names that words before tell more fully: "anti-tip bracket absent ... three brackets to get". */
export function fullerNames(
  talk: Talk,
  { lot, at }: Placed,
  own: readonly Naming[],
  phrases: readonly Phrase[],
): Naming[] {
  const start = talk.frames[at]!.chunks[lot.from]!.start;
  const near = upTo(phrases, at, FULLER_REACH);
  return own.flatMap((naming) => {
    const head = naming.chunks.at(-1)!;
    // "8 post bases 6x6, 4 6x6": timber is named by its size, which other goods only have.
    if (/^\d/.test(head.term?.name ?? head.word)) return [];
    const p = near.findLast(
      ({ chunks }) =>
        chunks.at(-1)!.end <= start &&
        chunks.length > 1 &&
        chunks.some((c, k) => k > 0 && singular(c.word) === singular(head.word)),
    );
    if (!p) return [];
    const until = p.chunks.findLastIndex((c) => singular(c.word) === singular(head.word));
    const more = p.chunks
      .slice(0, until)
      .filter((c) => c.kind !== 'quantity' && !naming.chunks.some((n) => n.word === c.word));
    if (!more.length) return [];
    const added = more.at(-1)!;
    return [
      {
        ...naming,
        chunks: [...more, ...naming.chunks],
        features: [
          ...naming.features,
          'fuller',
          `fuller back ${Math.min(at - p.at, 4)}`,
          `fuller by ${more.length} to ${naming.chunks.length}`,
          `fuller ${kindOf(added)} ${kindOf(head)}`,
          `fuller word ${added.word}`,
          `fuller ${lot.kind} ${more.length}`,
          `fuller head ${kindOf(head)}`,
        ],
      },
    ];
  });
}

/** What speaks for a thing being counted so wherever it stands: its kind and its unit. */
function sortFeatures(lot: Lot, chunks: readonly Chunk[]): string[] {
  const head = chunks.at(-1)!;
  const kind = kindOf(head);
  const unit = unitOf(lot);
  const amount = lot.upper ?? lot.amount;
  const by = amount?.unit ?? lot.pack ?? lot.kind;
  const out = [
    `kind ${kind}`,
    `kind ${kind} ${unit}`,
    `head ${head.term?.name ?? head.word}`,
    `by ${by} ${head.term?.counter}`,
    `by ${by} ${head.term?.name ?? head.word}`,
    `words ${Math.min(chunks.length, 4)}`,
    `plural ${/s$/.test(head.word)} ${unit} ${amount ? amount.value.valueOf() > 1 : '-'}`,
    `goods ${chunks.some(isGoods)}`,
  ];
  if (amount?.unit && head.term?.soldBy) out.push(head.term.soldBy.includes(amount.unit) ? 'sold so' : 'not sold so');
  return out;
}

function phraseFeatures(talk: Talk, { lot, at }: Placed, p: Phrase, rank: number): string[] {
  const frame = talk.frames[p.at]!;
  const here = talk.frames[at]!;
  const head = p.chunks.at(-1)!;
  const kind = kindOf(head);
  const unit = unitOf(lot);
  const amount = lot.upper ?? lot.amount;
  const before = frame.chunks[p.from - 1];
  const counted = before?.word === 'of' ? frame.chunks[p.from - 2] : before;
  const back = at - p.at;
  const sentences = Math.min(here.sentence - frame.sentence, 3);
  const after = frame.chunks[p.until];
  const out = [
    ...sortFeatures(lot, p.chunks),
    `back ${back}`,
    `sentences ${sentences}`,
    `rank ${Math.min(rank, 6)}`,
    `rank ${Math.min(rank, 6)} ${lot.kind}`,
    `goods ${p.chunks.some(isGoods)} ${lot.named}`,
    `of ${before && isPreposition(before) ? before.word : '-'}`,
    `said ${frame.predicate}`,
    `place ${back === 0 ? 'here' : frame.subject.includes(head) ? 'subject' : frame.rest.includes(head) ? 'rest' : '-'}`,
    `pointing ${lot.pointing}`,
    `${p.until === lot.from && back === 0 ? 'touches' : 'apart'} ${lot.named}`,
    `meant ${lot.named} ${lot.own.length > 0}`,
    `meant ${lot.kind} ${lot.named}`,
    `asked ${here.lemma} ${kind}`,
    `did ${frame.use} ${frame.predicate}`,
    `behind ${before ? (before.verb ? `v ${before.verb.use}` : before.kind === 'word' ? before.word : before.kind) : '#'}`,
    `ahead ${after ? (after.verb ? `v ${after.verb.use}` : after.kind === 'word' ? after.word : kindOf(after)) : '#'}`,
  ];
  if (p.done) out.push('done', `done ${unit}`);
  if (/[A-Z]/.test(talk.text[head.start]!) && head.kind === 'word') out.push(`capital ${p.from > 0}`);
  if (lot.own.some((m) => p.chunks.some((c) => c.word === m.word || c.word === `${m.word}s`))) out.push('shares');
  if (frame.area !== here.area) out.push('other room');
  if (p.chunks.some((c) => c.word === 'out')) out.push('out');
  if (counted?.quantity) out.push(counted.quantity.unit === amount?.unit ? 'same unit' : 'counted', `counted ${kind}`);
  if (frame.chunks.length === p.chunks.length) out.push('alone', `alone ${kind}`);
  if (/:|-/.test(talk.text.slice(head.end, after?.start ?? talk.frames[p.at + 1]?.start ?? head.end)))
    out.push('label');
  if (before?.word === 'of' && /^(?:out|outta)$/.test(frame.chunks[p.from - 2]?.word ?? '')) out.push('ran out');
  if (/^(?:no|another|more|new)$/.test(before?.word ?? '')) out.push(`before ${before!.word}`);
  if (frame.chunks.some((c) => c.term?.kind === 'defect')) out.push(`flawed ${back > 0}`);
  if (frame.use === 'need' || frame.use === 'use' || frame.use === 'buy' || frame.use === 'have')
    out.push(`use ${frame.use}`);
  if (lot.own.length > 0 && !lot.named) out.push('modified');
  if (lot.more) out.push(`more ${kind}`);
  if (p.chunks.some((c) => c.quantity)) out.push('sized');
  if (before && isDeterminer(before)) out.push('the');
  return out;
}

/** Words that speak of the rest of goods, and of more of them. */
const LEFT = /\b(?:left|leftover|spare|spares|over|extra|remain|remaining|rest|still)\b/;
const WANTS = /\b(?:need|needs|want|wants|more|another|bring|get|grab|order|buy|pick up|short)\b/;

/** Goods counted before are likely to be counted again, in the same unit more so. */
function toldFeatures(talk: Talk, { lot, at }: Placed, p: Phrase, told: readonly Told[]): string[] {
  const head = p.chunks.at(-1)!;
  const again = told.findLastIndex(({ naming }) =>
    naming.chunks.some((c) => c.start <= head.start && head.end <= c.end),
  );
  const same = told.findLastIndex((t) => t.naming.chunks.at(-1)!.word === head.word);
  if (again < 0) return same < 0 ? [`never told ${told.length > 0}`] : [`like told ${Math.min(told.length - same, 3)}`];
  const { placed, status } = told[again]!;
  const said = talk.frames[at]!.chunks.map((c) => c.word).join(' ');
  const asks = LEFT.test(said) ? 'left' : WANTS.test(said) ? 'wants' : talk.frames[at]!.use;
  const unit = (placed.lot.upper ?? placed.lot.amount)?.unit ?? placed.lot.pack;
  const here = (lot.upper ?? lot.amount)?.unit ?? lot.pack;
  const back = Math.min(told.length - again, 3);
  return [
    `told ${back}`,
    `told ${back} ${unitOf(lot)}`,
    `told ${at === placed.at ? 'here' : 'before'}`,
    `told by ${unit === here}`,
    `told ${status} ${asks}`,
    `told ${status} ${asks} ${unit === here} ${back}`,
  ];
}
