import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import { isImperativeAt, isTerseOrder } from './imperative.ts';
import { HAVES, isNegative } from './words.ts';

/** How a clause says its thing. */
export type Predicate =
  /** "Call the plumber", "grout it tomorrow". */
  | 'imperative'
  /** "Pulled the flashing", "I ran a bead". */
  | 'past'
  /** "The flange is cracked", "walls are tiled". */
  | 'copula'
  /** "Has to come down", "needs two more", "gotta swap it": something still owed. */
  | 'owed'
  /** "Will", "won't", "can't", "I'll". */
  | 'modal'
  /** "It leaks", "sits at sixteen". */
  | 'present'
  /** No verb: a list entry, a label, "nail pops x5". */
  | 'none';

const OWED_WORDS = new Set(['gotta', 'wanna', 'needs', 'need', 'must', 'hasta', 'wants', 'falta']);
const PAST_SUBJECTLESS = new Set(['past', 'participle']);

/** What a clause says, and where. */
interface Said {
  predicate: Predicate;
  verbAt: number;
  subjectEnd: number;
  lemma: string | null;
  use: string | null;
}

const none: Said = { predicate: 'none', verbAt: -1, subjectEnd: 0, lemma: null, use: null };

function said(predicate: Predicate, chunks: readonly Chunk[], at: number, subjectEnd: number): Said {
  const verb = chunks[at]?.verb;
  return { predicate, verbAt: at, subjectEnd, lemma: verb?.lemma ?? null, use: verb?.use ?? null };
}

/** Finds the verb that says the clause. */
export function predicateOf(chunks: readonly Chunk[]): Said {
  let i = 0;
  while (
    chunks[i]?.kind === 'time' ||
    chunks[i]?.kind === 'mark' ||
    (chunks[i]?.kind === 'word' && chunks[i]!.word === 'please')
  )
    i++;
  const head = chunks[i];
  if (!head) return none;
  // "Touch up behind reception done": a job by its name, and that it is over.
  const over = chunks.length > 2 && /^(?:done|finished|complete|completed)$/.test(chunks.at(-1)!.word);
  if (over && head.verb?.forms.has('base') && chunks[i + 1]?.word !== 'to') return none;
  if (isImperativeAt(chunks, i)) return said('imperative', chunks, i, i);
  if (isTerseOrder(chunks, i)) return said('imperative', chunks, i, i);
  if (head.word === 'got' && isOwed(chunks, i)) return verbAfter('owed', chunks, i, i);
  if (
    head.verb &&
    [...head.verb.forms].some((f) => PAST_SUBJECTLESS.has(f)) &&
    !head.verb.forms.has('base') &&
    !isNounTerm(chunks[i + 1]?.kind === 'word' ? undefined : head)
  ) {
    // "Used 3 rolls", "pulled the flashing"; but "cracked fitting under the sink" is a noun with its flaw.
    const next = chunks[i + 1];
    const isNoun = next !== undefined && isNounTerm(next) && head.verb.use === 'other';
    if (!isNoun) return said('past', chunks, i, i);
  }
  for (let at = i; at < chunks.length; at++) {
    const chunk = chunks[at]!;
    const next = chunks[at + 1];
    if (chunk.owner && isPredicative(chunks, at + 1)) {
      if (
        next &&
        (next.word === 'gonna' || next.word === 'gotta' || (next.word === 'got' && chunks[at + 2]?.word === 'to'))
      )
        return verbAfter('owed', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (at === i && chunk.word === 'let') continue;
    if (isOwed(chunks, at)) return verbAfter('owed', chunks, at, at);
    if (isSubjectPronoun(chunk) && /'s$|^(its|thats|theres)$/.test(chunk.word) && !isModal(next)) {
      if (
        next?.verb &&
        (next.verb.forms.has('past') || next.verb.forms.has('participle')) &&
        chunk.word !== "that's" &&
        chunk.word !== "it's"
      )
        return said('past', chunks, at + 1, at + 1);
      if (next && isOwed(chunks, at + 1)) return verbAfter('owed', chunks, at + 1, at + 1);
      if (next?.word === 'gonna' || isGoingTo(chunks, at + 1)) return verbAfter('modal', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)('m|'re)$/.test(chunk.word)) {
      if (next?.word === 'gonna' || isGoingTo(chunks, at + 1)) return verbAfter('modal', chunks, at + 1, at + 1);
      if (next?.verb?.forms.has('ing')) return said('present', chunks, at + 1, at + 1);
      return said('copula', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)('ve|ve)$/.test(chunk.word)) {
      if (next && (next.word === 'gotta' || (next.word === 'got' && chunks[at + 2]?.word === 'to')))
        return verbAfter('owed', chunks, at + 1, at + 1);
      const verbAt = chunks.findIndex((c, k) => k > at && k <= at + 3 && c.verb);
      return verbAt > 0 ? said('past', chunks, verbAt, at + 1) : said('present', chunks, at, at + 1);
    }
    if (/^(i|we|he|she|they|you)'(ll|d)$/.test(chunk.word)) return verbAfter('modal', chunks, at, at + 1);
    if ((isCopula(chunk) || chunk.word === 'get') && at > i) {
      // "Tyler is gonna wrap the garage side".
      if (/^(?:is|are)$/.test(chunk.word) && (next?.word === 'gonna' || isGoingTo(chunks, at + 1)))
        return verbAfter('modal', chunks, at + 1, at);
      if (/^(got|gets?|getting)$/.test(chunk.word)) {
        if (chunk.word === 'got' && next?.word === 'to') return verbAfter('owed', chunks, at, at);
        if (next?.verb?.forms.has('participle') && chunk.word !== 'got') return said('owed', chunks, at + 1, at);
        return said('past', chunks, at, at);
      }
      // "Sealer crew comes monday to seal it" moves; "came in at five" and "come broken" say how a thing is.
      if (/^(?:come|comes)$/.test(chunk.word) && (next?.time || /^(?:to|by|back|over|in|out)$/.test(next?.word ?? '')))
        return said('present', chunks, at, at);
      return { ...said('copula', chunks, at, at), lemma: 'be', use: 'other' };
    }
    if (isCopula(chunk) && at === i && !chunk.verb?.forms.has('past')) return said('copula', chunks, at, at);
    if (isModal(chunk)) return verbAfter('modal', chunks, at, at);
    if (HAVES.has(chunk.word)) {
      const perfect = next?.verb?.forms.has('participle') && !isNounTerm(next);
      return perfect
        ? said('past', chunks, at + 1, at)
        : { ...said('present', chunks, at, at), lemma: 'have', use: 'have' };
    }
    if (chunk.verb && at > i && saysIt(chunks, at)) {
      const forms = chunk.verb.forms;
      return said(forms.has('past') ? 'past' : 'present', chunks, at, at);
    }
    if (chunk.word === 'got' && at === i) return said('past', chunks, at, at);
  }
  return none;
}

/** A verb in subject-verb position: after a pronoun, or a past or -s form after a noun. */
function saysIt(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at]!;
  const before = chunks[at - 1]!;
  const forms = chunk.verb!.forms;
  if (isPreposition(before) || isDeterminer(before) || before.word === 'to') return false;
  if (
    isSubjectPronoun(before) ||
    (/^(?:already|just|also|only|finally|really|never|then|actually|went|still)$/.test(before.word) &&
      isSubjectPronoun(chunks[at - 2]))
  )
    return true;
  if (forms.has('past') && !forms.has('base') && chunk.kind !== 'term') return true;
  if (forms.has('past') && !forms.has('base')) return !isNounTerm(chunks[at + 1]) || before.kind !== 'word';
  if (forms.has('s') && !isNounTerm(chunk))
    return isNounTerm(before) || before.kind === 'word' || before.kind === 'number';
  return false;
}

/** "is", said as "'s" on a noun, must be followed by what the noun is. */
export function isPredicative(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at];
  if (!chunk) return false;
  if (chunk.kind === 'quantity') return !isNounTerm(chunks[at + 1]);
  if (chunk.kind === 'time') return true;
  if (chunk.kind === 'term')
    return (
      chunk.term!.kind === 'defect' ||
      (chunk.term!.kind === 'task' && Boolean(chunk.verb && !chunk.verb.forms.has('base')))
    );
  if (isPreposition(chunk) || isDeterminer(chunk) || isNegative(chunk.word)) return true;
  if (chunk.verb && !chunk.verb.forms.has('base')) return true;
  if (/[a-z]{3}ing$/.test(chunk.word) && chunk.kind === 'word') return true;
  return /^(gonna|gotta|all|too|about|almost|still|just|now|only|already|got|been|good|fine|ok|okay|bad|tight|loose|short|long|high|low|dry|wet|hot|cold|dead|done|ready|set|cut|so|real|pretty|way|kind|like|where|what|probably|mostly|finally|back|running|a)$/.test(
    chunk.word,
  );
}

function isOwed(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at]!;
  const next = chunks[at + 1];
  if (chunk.kind === 'mark') return false;
  if (/^(has|have|had|having|got|i've|we've|gots)$/.test(chunk.word) && next?.word === 'to') return true;
  if (chunk.word === 'supposed' && next?.word === 'to') return true;
  return OWED_WORDS.has(chunk.word) && !(chunk.word === 'wants' && at === 0 ? false : chunk.kind === 'quantity');
}

/** "Going to run the last one": but "going to the yard" goes there. */
const isGoingTo = (chunks: readonly Chunk[], at: number) =>
  chunks[at]?.word === 'going' && chunks[at + 1]?.word === 'to' && chunks[at + 2]?.verb?.forms.has('base') === true;

/** The verb that an owed or modal word governs: "has to be cut", "needs replacing", "gotta come down". */
function verbAfter(predicate: Predicate, chunks: readonly Chunk[], at: number, subjectEnd: number): Said {
  for (let k = at + 1; k < chunks.length && k <= at + 7; k++) {
    const chunk = chunks[k]!;
    if (chunk.kind === 'quantity' || (isDeterminer(chunk) && chunk.word !== 'all')) break;
    if (chunk.verb && !/^(to|have|has)$/.test(chunk.word) && !(chunk.verb.lemma === 'be') && chunk.word !== 'get')
      return said(predicate, chunks, k, subjectEnd);
    if (chunk.word === 'get') {
      const next = chunks[k + 1];
      return next?.verb?.forms.has('participle') && !isNounTerm(next)
        ? said(predicate, chunks, k + 1, subjectEnd)
        : said(predicate, chunks, k, subjectEnd);
    }
    if (isNounTerm(chunk)) break;
  }
  const own = chunks[at]!.verb;
  return { predicate, verbAt: at, subjectEnd, lemma: own?.lemma ?? chunks[at]!.word, use: own?.use ?? null };
}
