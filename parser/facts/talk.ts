import { isNumberedRoom } from '../trade/numberedRooms.ts';
import type { Reading } from '../types.ts';
import { type Chunk, isDeterminer, isGoods, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import type { Frame } from './frames.ts';
import { isPredicative } from './predicate.ts';
import { isNegative, OBJECT_PRONOUNS, SUBORDINATORS } from './words.ts';

/** What the fact rules read from: the note's clauses in order, and what was being talked about at each. */
export interface Talk {
  text: string;
  reading: Omit<Reading, 'clauses'>;
  /** Every piece of it, what divides clauses included. */
  chunks: readonly Chunk[];
  frames: readonly Frame[];
  /** The rooms that the job is known to have. */
  areas: readonly string[];
}

const EMPTY = new Set(
  "the a an this that these those my our your his her its their some any and or of uh um just now already still too also really very pretty all up there here please so then got gonna gotta i we he she they you it i'm we're almost maybe probably well again it's that's whole little bit me him them us em \"em kind sort figured never".split(
    ' ',
  ),
);

/** A phrase as the list writes it: articles, pronouns and padding off, trade spelling on. */
export function phrase(chunks: readonly Chunk[], keep: ReadonlySet<string> = new Set()): string {
  return chunks
    .filter((c, k) => !(/^(?:about|around)$/.test(c.word) && (chunks[k + 1]?.quantity || !chunks[k + 1])))
    .filter((c) => c.kind !== 'mark' && c.kind !== 'break' && c.kind !== 'time')
    .map((c) =>
      c.kind === 'quantity'
        ? c.quantity!.quote.toLowerCase()
        : c.term && isNumberedRoom(c.term)
          ? c.term.name
          : c.owner && !isNounTerm(c)
            ? c.owner
            : c.kind === 'term' && c.owner
              ? c.owner
              : (ORDINALS.get(c.word) ?? c.word),
    )
    .filter((w) => keep.has(w) || !EMPTY.has(w))
    .join(' ')
    .trim();
}

const ORDINALS: ReadonlyMap<string, string> = new Map(
  Object.entries({ '1st': 'first', '2nd': 'second', '3rd': 'third' }),
);

/** How many of a row's first hold, where all that hold come first: by halves, since a long note has thousands. */
export function countWhile<T>(row: readonly T[], holds: (one: T) => boolean): number {
  let [low, high] = [0, row.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(row[middle]!)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The first piece of a row that begins at or after an offset; the row's length where none does. */
export const firstFrom = (row: readonly { start: number }[], offset: number): number =>
  countWhile(row, ({ start }) => start < offset);

/** The pieces of a row that lie within a span: where the first stands, and where the one after the last does. */
export function rangeIn(
  row: readonly { start: number; end: number }[],
  span: { start: number; end: number },
): [from: number, until: number] {
  const from = firstFrom(row, span.start);
  let until = from;
  while (until < row.length && row[until]!.end <= span.end) until++;
  return [from, until];
}

export const spanOf = (chunks: readonly Chunk[]): { start: number; end: number } => ({
  start: chunks[0]!.start,
  end: chunks.at(-1)!.end,
});

/** Words of a noun phrase from `at` on: up to a verb, preposition, conjunction, mark or time. */
export function nounPhraseFrom(chunks: readonly Chunk[], at: number): number {
  let k = at;
  for (; k < chunks.length; k++) {
    const c = chunks[k]!;
    if (c.kind === 'mark' || c.kind === 'break' || c.kind === 'time') break;
    if (isNounTerm(c) && c.owner && isPredicative(chunks, k + 1)) return k + 1;
    if (isNounTerm(c) || c.kind === 'quantity' || joinsPair(chunks, k)) continue;
    if (isPreposition(c) || isSubjectPronoun(c) || isNegative(c.word)) break;
    if (c.kind === 'word' && (STOPPERS.has(c.word) || SUBORDINATORS.has(c.word) || /[a-z]{3}ly$/.test(c.word))) break;
    // "Color match caulk": a verb between words of a name.
    const inName = c.verb?.forms.has('base') && isGoods(chunks[k + 1]) && chunks[k - 1]?.kind !== 'quantity';
    // "Nine inch covers": behind a size, what it is the size of.
    const isSized = chunks[k - 1]?.quantity?.unitKind === 'length' && NOUNISH.test(c.word.replace(/s$/, ''));
    if (c.verb && !c.verb.forms.has('participle') && k > at && !NOUNISH.test(c.word) && !inName && !isSized) break;
    if (c.owner) {
      k++;
      break;
    }
  }
  return k;
}

/** The "x" or "by" of `12x24`: it stands between two figures of one size, and names nothing. */
export const joinsPair = (chunks: readonly Chunk[], k: number): boolean => {
  const group = chunks[k - 1]?.quantity?.group;
  return chunks[k]?.kind === 'word' && group?.kind === 'pair' && chunks[k + 1]?.quantity?.group?.id === group.id;
};

const NOUNISH =
  /^(trim|stain|drain|seal|stop|tape|board|line|cap|vent|pipe|box|plate|strap|lock|plug|tile|patch|paint|touch|cover|base|block|brace|hook|mount|wire|work|return|drop|closer|level)$/;
const STOPPERS = new Set(
  'and or but so then is are was were has have had be been will would can could should to that which who if when while because cause cuz no not too also now again already left gone used wanted needed need needs wants bought ordered grabbed picked extra fitted more short right here there each apiece & + plus it them him her us me they i we you he she anyway just still'.split(
    ' ',
  ),
);

/** True where a phrase only points at something named elsewhere. */
export const isPointer = (chunks: readonly Chunk[]) =>
  chunks.length === 0 ||
  chunks.every(
    (c) =>
      OBJECT_PRONOUNS.has(c.word) ||
      isSubjectPronoun(c) ||
      isDeterminer(c) ||
      WHICH.test(c.word.replace(/'s$/, '')) ||
      (c.kind === 'quantity' && c.quantity!.unit === null),
  );
/** "The last one", "half of 'em": which of them, not what. */
const WHICH =
  /^(?:there|one|ones|last|first|second|third|other|others|old|new|half|couple|few|most|rest|of|left|right|two|three|four|'|em|'em|here)$/;

const PEOPLE = new Set(
  "i we you he she they i'm we're he's she's they're i've we've i'll we'll he'll she'll you're you'll they'll ive ill weve".split(
    ' ',
  ),
);
/** A subject that is a person: the speaker, a role, "he". */
export const isPerson = (chunks: readonly Chunk[]) =>
  chunks.some((c) => PEOPLE.has(c.word) || (c.kind === 'term' && c.term!.kind === 'role')) ||
  /^(somebody|someone|nobody|everybody|guys|boss|boys|crew|helper)(?:'s)?$/.test(chunks.at(-1)?.word ?? '');

/** The first noun phrase in a stretch that holds a trade noun. */
export function thingIn(chunks: readonly Chunk[]): Chunk[] {
  const first = chunks.findIndex((c) => isNounTerm(c) && c.term!.kind !== 'role' && c.term!.kind !== 'area');
  const at = first >= 0 ? first : chunks.findIndex((c) => isNounTerm(c) && c.term!.kind === 'area');
  if (at < 0) return [];
  let from = at;
  while (from > 0 && isModifier(chunks[from - 1]!)) from--;
  const end = Math.max(nounPhraseFrom(chunks, at), at + 1);
  return chunks.slice(from, end).filter((c) => c.kind !== 'quantity' || c.quantity!.unit !== null);
}

export const isModifier = (c: Chunk) =>
  isNounTerm(c) ||
  (c.kind === 'term' && c.term!.kind === 'finish') ||
  (c.kind === 'word' &&
    !c.verb &&
    /^[a-z]/.test(c.word) &&
    !isPreposition(c) &&
    !isSubjectPronoun(c) &&
    !STOPPERS.has(c.word) &&
    !isDeterminer(c) &&
    !EMPTY.has(c.word) &&
    !isNegative(c.word));

/** The goods named last before a place in the talk, for "one bag of those", "1 roll left". */
export function lastGoods(talk: Talk, at: number, before = Number.POSITIVE_INFINITY): Chunk[] {
  for (let k = at; k >= 0 && k >= at - 4; k--) {
    const chunks = talk.frames[k]!.chunks;
    for (let j = chunks.length - 1; j >= 0; j--) {
      const c = chunks[j]!;
      if (c.start >= before || !isGoods(c)) continue;
      let from = j;
      while (from > 0 && (isModifier(chunks[from - 1]!) || isSize(chunks[from - 1]!))) from--;
      return chunks.slice(from, j + 1);
    }
  }
  return [];
}

export const isSize = (c: Chunk | undefined) =>
  c?.kind === 'quantity' &&
  ['length', 'gauge', 'current', 'power', 'other', 'volume', 'weight'].includes(c.quantity!.unitKind ?? '') &&
  c.quantity!.unitFrom !== 'none';
