import { type Chunk, isCopula, isGoods, isModal, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { firstFrom, isPerson, type Talk } from '../talk.ts';
import { formsOf } from '../verbs.ts';
import { HAVES, isNegative } from '../words.ts';
import type { Fate } from './fates.ts';
import { listedAs } from './lists.ts';
import { isCount } from './lot.ts';
import type { Naming, Placed } from './naming.ts';

/** What was decided on the lot before, and how far back it stands. */
export interface Before {
  placed: Placed;
  fate: Fate;
  naming: Naming | null;
}

/** Words that speak of needing, of having, of using up. */
const CUES: [string, RegExp][] = [
  [
    'need',
    /\b(?:need|needs|want|wants|could use|bring|grab|order|reorder|pick up|short|shy|list|buy|get me|out of|outta|low on|please|add)\b/,
  ],
  [
    'have',
    /\b(?:left|leftover|still|got|have|has|truck|van|shop|garage|on hand|extra|spare|down to|remain|remains|remaining|rest|rests|spares|stock|trailer|here)\b/,
  ],
  [
    'used',
    /\b(?:used|use|took|went|goes|put|ran|installed|set|hung|swapped|replaced|mixed|spent|spend|spends|poured|in|on|up|gone|through|all told|burned|ate)\b/,
  ],
  ['bought', /\b(?:bought|paid|picked|store|receipt|bucks|grabbed|cost)\b/],
  ['came', /\b(?:came|arrived|delivered|showed up|turned up|dropped|landed|here|already|in hand)\b/],
  ['ate', /\b(?:went through|burned through|blew through|killed|finished|ate|took|all gone|emptied|used up)\b/],
  ['lacks', /\b(?:short|shorted|shy|missing|lost|out of|outta|run out|ran out|almost out|low)\b/],
  ['back', /\b(?:back|return|returned|returning)\b/],
];

/** Where goods are kept. */
const KEPT =
  /^(?:truck|van|ute|trailer|garage|shed|shop|office|home|basement|cellar|site|yard|boot|bench|drawer|shelf|storage|closet|pallet|rack|bucket|stock|car|pickup|warehouse|attic|porch|driveway|carport)$/;

/** What needs no word to tell it: an edge, a figure, a day. */
const plainly = (c: Chunk | undefined) =>
  !c ? '#' : c.quantity ? 'Q' : c.time ? 'T' : c.notQuantity ? 'N' : undefined;
const wordOf = (c: Chunk | undefined) =>
  plainly(c) ?? c!.verb?.lemma ?? (c!.kind === 'term' && isGoods(c) ? 'G' : c!.word);
const classOf = (c: Chunk | undefined) => plainly(c) ?? wordClassOf(c!);
const wordClassOf = ({ kind, term, verb }: Chunk) =>
  kind === 'term' ? `t ${term!.kind}` : verb ? `v ${verb.use}` : kind === 'word' ? 'w' : kind;

/** A verb, or what stands for one: is, has, gotta. */
const isSaying = (c: Chunk) =>
  (c.verb !== undefined && !isNounTerm(c)) || isCopula(c) || isModal(c) || HAVES.has(c.word);

/** A mark that ends what is said, or a new line. */
const ends = (c: Chunk | undefined) => !c || c.kind === 'break' || (c.kind === 'mark' && /^[.;!?]$/.test(c.word));
const opensAt = (row: readonly Chunk[], k: number) => ends(row[k - 1]) || row[k - 1]!.kind === 'mark';

/** So many words beside a lot that still may speak of it. */
const NEAR = 5;

/** What is said right before (-1) or right behind (1) a place, up to the end of the sentence. */
function windowOf(row: readonly Chunk[], at: number, step: -1 | 1): string {
  const words: string[] = [];
  for (let k = at; words.length < NEAR && !ends(row[k]); k += step) words.push(row[k]!.word);
  return (step < 0 ? words.reverse() : words).join(' ');
}

/** Where the nearest verb stands before a place, within what is said there; -1 where none does. */
function verbBefore(row: readonly Chunk[], from: number): number {
  for (let k = from - 1; k >= from - 6 && !ends(row[k]); k--) if (isSaying(row[k]!)) return k;
  return -1;
}

function verbBehind(row: readonly Chunk[], until: number): Chunk | undefined {
  for (let k = until; k < until + 4 && !ends(row[k]); k++) if (isSaying(row[k]!)) return row[k];
  return undefined;
}

const formOf = (c: Chunk) => (c.verb ? formsOf(c.verb) : isCopula(c) ? 'is' : isModal(c) ? 'will' : 'has');

const said = (frame: Frame | undefined) => frame?.chunks.map((c) => c.word).join(' ') ?? '';

/** What kind of thing a lot is: how it is counted, which its decision turns on before all else. */
function sortOf({ lot }: Placed): string {
  const q = lot.upper ?? lot.amount;
  if (q) return isCount(q) ? 'count' : (q.unitKind ?? 'count');
  if (lot.pack) return 'pack';
  return lot.article ? 'one' : lot.kind;
}

/** What joins a lot to the one before: a comma, "and", a new line, a few words or many. */
function gapOf(text: string): string {
  if (/\n/.test(text)) return text.trim().length < 8 ? 'line' : 'far';
  const said = text.trim().toLowerCase();
  return said.length <= 12
    ? said.replace(/\s+/g, ' ')
    : said.length < 40
      ? /[.;!?]/.test(said)
        ? 'near.'
        : 'near'
      : 'far';
}

/** Everything about a lot that may tell whether it is goods, and what became of them. */
export function cuesOf(talk: Talk, placed: Placed, naming: Naming | null, before: Before | null): string[] {
  const { lot, at } = placed;
  const frame = talk.frames[at]!;
  const { chunks } = frame;
  const sort = sortOf(placed);
  const out = ['any', `sort ${sort}`];
  const both = (cue: string) => out.push(cue, `${sort} ${cue}`);
  // The clause and its verb.
  const side = frame.verbAt < 0 ? 'no' : lot.from > frame.verbAt ? 'behind' : 'before';
  both(`says ${frame.predicate} ${side}${frame.negative ? ' not' : ''}`);
  both(`verb ${frame.lemma} ${side}`);
  out.push(`${sort} ${frame.use} ${frame.predicate} ${side}`);
  out.push(
    `use ${frame.use} ${side}`,
    `verb ${frame.lemma} ${frame.predicate}`,
    `use ${frame.use} ${frame.predicate} ${side}`,
  );
  out.push(
    `who ${isPerson(frame.subject) ? 'person' : frame.subject.length ? (frame.subject.some(isGoods) ? 'goods' : 'thing') : 'nobody'} ${frame.predicate}`,
  );
  if (chunks.some((c) => c.term?.kind === 'defect')) both('flawed');
  // The words around it, over the ends of its clause too, which talk does not mark.
  const row = talk.chunks;
  const from = firstFrom(row, chunks[lot.from]!.start);
  const until = firstFrom(row, Math.max(chunks[lot.until - 1]!.end, naming?.end ?? 0));
  for (const d of [1, 2, 3]) {
    const [left, right] = [row[from - d], row[until - 1 + d]];
    out.push(`left${d} ${wordOf(left)}`, `right${d} ${wordOf(right)}`);
    if (d < 3) out.push(`left${d} ${classOf(left)}.`, `right${d} ${classOf(right)}.`);
  }
  both(`left ${wordOf(row[from - 1])}`);
  both(`right ${wordOf(row[until])}`);
  out.push(
    `left ${wordOf(row[from - 2])} ${wordOf(row[from - 1])}`,
    `right ${wordOf(row[until])} ${wordOf(row[until + 1])}`,
  );
  // Talk runs on without a mark, so that the verb right beside it tells more than the clause's own.
  const left = verbBefore(row, from);
  if (left >= 0) {
    const verb = row[left]!;
    const who = isPerson(row.slice(Math.max(0, left - 2), left)) ? 'person' : opensAt(row, left) ? 'nobody' : 'other';
    both(`beside ${wordOf(verb)}`);
    both(`beside ${verb.verb?.use} ${formOf(verb)} ${who}`);
    out.push(`beside ${wordOf(verb)} ${formOf(verb)} ${who}`, `beside ${wordOf(verb)} ${wordOf(row[left + 1])}`);
    out.push(`beside away ${from - left}`);
  } else both('beside nothing');
  const toRight = verbBehind(row, until);
  if (toRight) {
    out.push(`then ${wordOf(toRight)}`, `then ${wordOf(toRight)} ${formOf(toRight)}`);
    both(`then ${toRight.verb?.use} ${formOf(toRight)}`);
  }
  const [near, past] = [windowOf(row, from - 1, -1), windowOf(row, until, 1)];
  for (const [name, pattern] of CUES) {
    if (pattern.test(near)) both(`before it ${name}`);
    if (pattern.test(past)) both(`behind it ${name}`);
  }
  const first = chunks[lot.from]!;
  if (!first.quantity) out.push(`first ${wordOf(first)}`);
  for (const c of new Set(chunks.slice(0, lot.from).map(wordOf))) out.push(`ahead ${c}`);
  for (const c of new Set(chunks.slice(lot.until).map(wordOf))) out.push(`after ${c}`);
  if (chunks.some((c, k) => k >= lot.until && KEPT.test(c.term?.name ?? c.word))) both('kept');
  if (chunks.some((c, k) => k < lot.from && KEPT.test(c.term?.name ?? c.word))) out.push('kept ahead');
  if (lot.pointing) both('pointing');
  // The clauses beside it.
  const [last, next] = [talk.frames[at - 1], talk.frames[at + 1]];
  const where = (f: Frame | undefined) => (f ? (f.sentence === frame.sentence ? 'same' : 'other') : '#');
  out.push(
    `joined ${frame.joinedBy} ${frame.predicate}`,
    `last ${last?.predicate} ${where(last)}`,
    `next ${next?.predicate} ${where(next)} ${next?.joinedBy}`,
  );
  if (last) out.push(`last verb ${last.lemma} ${where(last)}`, `last use ${last.use} ${last.predicate} ${where(last)}`);
  if (next) out.push(`next verb ${next.lemma} ${where(next)}`, `next use ${next.use} ${next.predicate} ${where(next)}`);
  for (const opener of frame.openers) out.push(`opens ${opener}`);
  for (const [name, pattern] of CUES) {
    if (pattern.test(said(frame))) both(`cue ${name}`);
    if (last && pattern.test(said(last))) out.push(`last cue ${name} ${where(last)}`);
    if (next && pattern.test(said(next))) out.push(`next cue ${name} ${where(next)}`);
  }
  const listed = listedAs(talk, at);
  if (listed) both(`list ${listed}`);
  if (lot.from === 0) out.push(`opens clause ${sort}`);
  if (lot.from === 0 && lot.until === chunks.length) both('whole clause');
  if (/\n\W*$/.test(talk.text.slice(Math.max(0, frame.start - 4), frame.start))) out.push('new line');
  // Its count.
  const q = lot.upper ?? lot.amount;
  if (q) {
    out.push(`unit ${q.unit}`, `one ${q.value.equals(1)}`, `whole ${q.value.d === 1n}`, `unit from ${q.unitFrom}`);
    if (q.bound) out.push(`bound ${q.bound}`);
    if (q.per) out.push('per');
    if (q.onCenter) out.push('on center');
    if (q.group) out.push(`group ${q.group.kind}`);
    if (/^(?:x|qty|\(|×)/i.test(q.quote)) out.push('marked');
    if (q.value.compare(60) > 0) out.push('many');
  }
  if (lot.pack) out.push(`pack ${lot.pack}`);
  if (lot.more) both('more');
  if (lot.code) out.push('code');
  // Its name.
  if (!naming) both('nameless');
  else {
    const head = naming.chunks.at(-1);
    const kind = head?.term?.kind ?? 'word';
    both(`named ${naming.own ? 'here' : 'before'} ${kind}`);
    out.push(`head ${head?.word}`, `goods ${naming.chunks.some(isGoods)} ${naming.own}`);
    if (head?.term?.counter) out.push(`counter ${head.term.counter}`);
    if (head && /s$/.test(head.word)) out.push(`plural ${sort}`);
    if (naming.sizes.length) both('sized');
    if (naming.chunks.some((c) => c.term?.kind === 'defect' || (c.verb && !c.verb.forms.has('base'))))
      both('name flawed');
    if (q?.unit && head?.term?.soldBy) both(`sold so ${head.term.soldBy.includes(q.unit)}`);
    for (const f of naming.features) if (/^(?:flawed|back|ran out|before|place)/.test(f)) out.push(`meant ${f}`);
  }
  if (chunks.slice(0, lot.from).some((c) => isNegative(c.word))) both('not ahead');
  // What was decided before.
  if (!before) out.push('first of all');
  else {
    const there =
      before.placed.at === at
        ? 'here'
        : talk.frames[before.placed.at]!.sentence === frame.sentence
          ? 'sentence'
          : 'far';
    both(`after ${before.fate} ${there}`);
    out.push(`after ${before.fate} ${there} ${frame.predicate}`, `after ${before.fate} ${there} ${frame.joinedBy}`);
    // What stands between a lot and the one before tells whether a list goes on.
    const gap = talk.text.slice(
      talk.frames[before.placed.at]!.chunks[before.placed.lot.until - 1]!.end,
      chunks[lot.from]!.start,
    );
    out.push(`gap ${gapOf(gap)} ${before.fate}`, `gap ${gapOf(gap)} ${before.fate} ${frame.predicate}`);
    if (naming && before.naming && naming.chunks.at(-1)?.word === before.naming.chunks.at(-1)?.word)
      out.push(`again ${before.fate}`);
  }
  return out;
}
