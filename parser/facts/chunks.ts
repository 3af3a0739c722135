import { isNumberedRoom } from '../trade/numberedRooms.ts';
import type { NotQuantity, Quantity, Reading, Term, TimeMention, Token, TokenRange, WordClassOf } from '../types.ts';
import { type Restated, restatedIn } from './restated.ts';
import { type Verb, verbOf } from './verbs.ts';
import { COPULAS, DETERMINERS, isSmall, MODALS, PREPOSITIONS, SUBJECT_PRONOUNS } from './words.ts';

/** The smallest piece that the fact rules look at: a quantity, a time, a trade word, or one other word or mark. */
export interface Chunk extends TokenRange {
  kind: 'quantity' | 'time' | 'number' | 'term' | 'word' | 'mark' | 'break';
  /** Lower case, as meant; several tokens joined by blanks. */
  word: string;
  start: number;
  end: number;
  quantity?: Quantity;
  time?: TimeMention;
  notQuantity?: NotQuantity;
  term?: Term;
  verb?: Verb;
  /** A noun with "'s" that may stand for "is": `drain's`. */
  owner?: string;
}

type Piece = { range: TokenRange; make: (chunk: Chunk) => Chunk };

/** Readings that claim token ranges, strongest first: a time over a quantity over a number over a trade word. */
function pieces(reading: Omit<Reading, 'clauses'>, placeOf: (quantity: Quantity) => TokenRange): Piece[] {
  const { tokens } = reading.heard;
  return [
    ...reading.times.map((time) => ({ range: time, make: (c: Chunk) => ({ ...c, kind: 'time' as const, time }) })),
    ...reading.terms
      .filter(({ term }) => isNominal(term.name) && !isNumberedRoom(term))
      .map(({ term, from, until }) => ({
        range: { from, until: lumberUntil(reading, from, until) ?? until },
        make: (c: Chunk) => ({ ...c, kind: 'term' as const, term }),
      })),
    ...reading.terms
      .filter(({ term }) => isNumberedRoom(term))
      .map(({ term, from, until }) => ({
        range: { from, until },
        // "2bs tub": its owner, heard without the apostrophe.
        make: (c: Chunk) => ({ ...c, kind: 'term' as const, term, word: c.word.replace(/(?<=[a-z])s$/, "'s") }),
      })),
    ...reading.quantities.map((quantity) => ({
      range: placeOf(quantity),
      make: (c: Chunk) => ({
        ...c,
        kind: 'quantity' as const,
        word: joined(tokens, quantity.from, quantity.until),
        quantity,
      }),
    })),
    ...reading.notQuantities.map((notQuantity) => ({
      range: notQuantity,
      make: (c: Chunk) => ({ ...c, kind: 'number' as const, notQuantity }),
    })),
    ...reading.terms.map(({ term, from, until }) => ({
      range: { from, until },
      make: (c: Chunk) => ({
        ...c,
        kind: 'term' as const,
        term,
        verb: until - from === 1 ? verbOf(c.word) : term.kind === 'task' ? phrasal(c.word) : undefined,
      }),
    })),
  ];
}

/**
 * "Five boxes of the 12x24, no make it six": a count put right stands where the first one stood, before its goods; a size,
 * or a count with goods of its own, stands where it was said.
 */
const placesIn =
  (restated: readonly Restated[]) =>
  (quantity: Quantity): TokenRange =>
    quantity.replaces && quantity.unitKind !== 'length' && !restated.some(({ by }) => by === quantity)
      ? quantity.replaces[0]!
      : quantity;

/** Lumber with its length (`2x10x12`) is one name: where the three figures end. */
function lumberUntil(reading: Omit<Reading, 'clauses'>, from: number, until: number): number | null {
  const first = reading.quantities.find((q) => q.from >= from && q.from < until);
  const size = first?.from === from ? 3 : 2;
  if (first?.group?.kind !== 'pair' || first.group.size !== size) return null;
  return reading.quantities.findLast((q) => q.group?.id === first.group!.id)!.until;
}

/** Timber by its section, which is its name: `2x6`, "five quarter". */
export const isNominal = (name: string): boolean => /^\d|^five quarter$/.test(name);

/** Cuts the heard note into chunks; skipped tokens (fillers, what was taken back) are left out. */
export function chunksOf(reading: Omit<Reading, 'clauses'>, wordClass?: WordClassOf): Chunk[] {
  const { tokens } = reading.heard;
  const owner: (Piece | undefined)[] = new Array(tokens.length);
  const gone = new Set<number>();
  const restated = restatedIn(reading);
  const placeOf = placesIn(restated);
  for (const { from, until } of restated) for (let i = from; i < until; i++) gone.add(i);
  for (const quantity of reading.quantities) {
    const place = placeOf(quantity);
    for (const { from, until } of quantity.replaces ? [...quantity.replaces, quantity] : [])
      for (let i = from; i < until; i++) if (i < place.from || i >= place.until) gone.add(i);
  }
  for (const piece of pieces(reading, placeOf)) {
    const { from, until } = piece.range;
    let free = true;
    for (let i = from; i < until; i++) if (owner[i] || gone.has(i)) free = false;
    if (free) for (let i = from; i < until; i++) owner[i] = piece;
  }
  const chunks: Chunk[] = [];
  for (let i = 0; i < tokens.length; ) {
    const piece = owner[i];
    const until = piece ? piece.range.until : i + 1;
    const first = tokens[i]!;
    const last = tokens[until - 1]!;
    if (gone.has(i) || (!piece && first.skip)) {
      i++;
      continue;
    }
    const word = joined(tokens, i, until);
    const plain: Chunk = {
      kind: first.kind === 'mark' || first.kind === 'break' ? first.kind : 'word',
      word,
      start: first.start,
      end: last.end,
      from: i,
      until,
    };
    const chunk = piece
      ? piece.make(plain)
      : { ...plain, verb: verbOf(word) ?? verbByPlace(plain, chunks) ?? askedFor(plain, tokens, wordClass) };
    if (chunk.kind !== 'quantity' && chunk.kind !== 'time' && /[^s]'s$|s'$/.test(word) && !SUBJECT_PRONOUNS.has(word)) {
      chunk.owner = word.replace(/'s?$/, '');
      chunk.verb = undefined;
    }
    // "Still have to touch up the hall": said as an order or behind "to", the name of a job is its verb.
    const doing = chunk.term && /^(?:surface|work)$/.test(chunk.term.kind) ? phrasal(word) : undefined;
    const before = chunks.at(-1);
    if (
      doing?.forms.has('base') &&
      (!before ||
        before.kind === 'mark' ||
        before.kind === 'break' ||
        /^(?:to|and|then|will|gonna|gotta|should|must|please)$|'ll$/.test(before.word))
    )
      Object.assign(chunk, { kind: 'word', term: undefined, verb: doing });
    chunks.push(chunk);
    i = until;
  }
  return chunks.map((c, k) => (c.kind === 'word' ? { ...c, word: apostrophe(c.word, chunks[k + 1]) } : c));
}

const SHORT_FOR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    thats: "that's",
    theres: "there's",
    heres: "here's",
    hes: "he's",
    shes: "she's",
    theyre: "they're",
    im: "i'm",
    ive: "i've",
    weve: "we've",
    theyve: "they've",
  }),
);

/** Dictation drops apostrophes: "its cracked" is "it's", but "its damper" is not. */
function apostrophe(word: string, next: Chunk | undefined): string {
  if (word !== 'its') return SHORT_FOR.get(word) ?? word;
  const said =
    next &&
    (next.kind === 'quantity' ||
      next.kind === 'time' ||
      next.term?.kind === 'defect' ||
      (next.verb && !next.verb.forms.has('base') && !isNounTerm(next)) ||
      /^(?:not|a|an|the|all|in|on|at|off|out|up|down|over|under|like|too|about|almost|still|just|now|only|already|been|gonna|gotta|got|good|fine|ok|okay|bad|tight|loose|short|long|high|low|dry|wet|hot|cold|dead|done|ready|set|cut|so|pretty|really|way|probably|supposed|going|where|what|open|closed|live|level|plumb|square|flush|straight|flat|solid|there|here|ours|his|theirs)$/.test(
        next.word,
      ));
  return said ? "it's" : word;
}

/** "Touch up", "trimmed out": the verb is the first word, and what it means needs the second. */
function phrasal(words: string): Verb | undefined {
  const [first, ...rest] = words.split(' ');
  const verb = verbOf(first ?? '');
  return verb && /^(?:up|out|in|off|down|on|over|back)$/.test(rest.join(' '))
    ? { ...verb, lemma: `${verb.lemma} ${rest.join(' ')}` }
    : undefined;
}

const DOERS = /^(?:i|we|they|he|she)$/;
const WILLS =
  /^(?:will|won't|gonna|gotta|wanna|can|can't|cant|could|couldn't|should|must|let's|lets|(?:i|we|he|she|they)'(?:ll|d))$/;
const BETWEEN = /^(?:just|already|also|still|then|only|finally|even|never|always|both|all|probably|really|went|and)$/;

/** "We burnished it", "he'll regib the beam": behind who does it, or behind "will", an unknown word is what is done. */
function verbByPlace(chunk: Chunk, before: readonly Chunk[]): Verb | undefined {
  if (chunk.kind !== 'word' || !/^[a-z]{3,}$/.test(chunk.word)) return undefined;
  // "Sort of" pads; "can sort that" works.
  if (isSmall(chunk.word) && chunk.word !== 'sort') return undefined;
  let k = before.length - 1;
  while (k >= 0 && BETWEEN.test(before[k]!.word)) k--;
  const word = before[k]?.word ?? '';
  if (WILLS.test(word)) return { lemma: chunk.word, use: 'work', forms: new Set(['base']) };
  if (!DOERS.test(word) || /(?:ly|ing)$/.test(chunk.word)) return undefined;
  const s = /^(?:he|she)$/.test(word) && /[^s]s$/.test(chunk.word);
  return s
    ? { lemma: chunk.word.slice(0, -1), use: 'other', forms: new Set(['s']) }
    : { lemma: chunk.word, use: 'other', forms: new Set(['base']) };
}

const BEFORE_BASE = /^(?:to|gonna|gotta|will|must|should|please|then|and)$/;
const AFTER_VERB = /^(?:off|out|up|down|back|away|over|the|a|an|all|it|them|that|those|these|my|our|his|her|their|em)$/;

/**
 * An order or plan whose verb only a general tagger knows ("burnish the reveal"). It is asked nowhere else: elsewhere
 * it takes too many of the trade's nouns for verbs, and verbs of the past that it adds are seldom work.
 */
function askedFor(chunk: Chunk, tokens: readonly Token[], wordClass: WordClassOf | undefined): Verb | undefined {
  if (!wordClass || chunk.kind !== 'word' || !/^[a-z]{4,}$/.test(chunk.word) || isSmall(chunk.word)) return undefined;
  const [before, after] = [tokens[chunk.from - 1], tokens[chunk.until]];
  const opens = !before || before.kind === 'break' || (before.kind === 'mark' && /^[.,;:!?]$/.test(before.text));
  if (!(opens || BEFORE_BASE.test(before.word)) || !AFTER_VERB.test(after?.word ?? '')) return undefined;
  const told = wordClass(chunk.word, opens ? '' : before.word, after!.word);
  return told?.class === 'verb' && told.form === 'base'
    ? { lemma: told.lemma, use: 'work', forms: new Set(['base']) }
    : undefined;
}

function joined(tokens: readonly Token[], from: number, until: number): string {
  if (until - from === 1) return tokens[from]!.word;
  let out = '';
  for (let i = from; i < until; i++) {
    const token = tokens[i]!;
    if (token.skip) continue;
    out += out && token.spaced ? ` ${token.word}` : token.word;
  }
  return out;
}

/** Is, was, sits: or a noun's "'s" followed by what it is said to be. */
export const isCopula = (chunk: Chunk | undefined) => chunk !== undefined && COPULAS.has(chunk.word);
export const isModal = (chunk: Chunk | undefined) => chunk !== undefined && MODALS.has(chunk.word);
export const isPreposition = (chunk: Chunk | undefined) => chunk?.kind === 'word' && PREPOSITIONS.has(chunk.word);
export const isDeterminer = (chunk: Chunk | undefined) => chunk?.kind === 'word' && DETERMINERS.has(chunk.word);
export const isSubjectPronoun = (chunk: Chunk | undefined) =>
  chunk?.kind === 'word' && SUBJECT_PRONOUNS.has(chunk.word);
export const isNounTerm = (chunk: Chunk | undefined) =>
  chunk?.kind === 'term' &&
  chunk.term!.kind !== 'task' &&
  chunk.term!.kind !== 'defect' &&
  chunk.term!.kind !== 'finish';
export const isGoods = (chunk: Chunk | undefined) =>
  chunk?.kind === 'term' &&
  (chunk.term!.kind === 'material' || chunk.term!.kind === 'part' || chunk.term!.kind === 'fixture');
