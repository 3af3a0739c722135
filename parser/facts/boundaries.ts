import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import { isHaveDo, isImperativeAt } from './imperative.ts';
import { isPredicative, predicateOf } from './predicate.ts';
import { CONJUNCTIONS, SUBORDINATORS } from './words.ts';

/** A clause of the past that names nobody. */
export function leavesOutI(current: readonly Chunk[]): boolean {
  const said = predicateOf(current);
  return said.predicate === 'past' && said.verbAt === 0;
}

/** "Tell dave | the tank is full" is one thing to say. */
export const tellsOf = (rest: readonly Chunk[]) =>
  rest.length <= 3 && /^(?:tell|ask|remind|text|email|show)$/.test(rest.find((c) => c.kind !== 'time')?.word ?? '');

/** "A roll of tape | the ridge is sagging": a thing named by itself, then another by article. */
export const isListed = (rest: readonly Chunk[], next: Chunk) =>
  isDeterminer(next) &&
  next.word !== 'all' &&
  rest.length > 1 &&
  (isNounTerm(rest.at(-1)) || rest.at(-1)!.kind === 'time' || rest.at(-1)!.kind === 'quantity');

/** Never behind a preposition or a helping verb. */
export const NOMINATIVE = /^(?:i|we|he|she|they)(?:'\w+)?$/;

/** "... if it rains | we push it": the condition leads where a second doer follows it before any mark. */
export function leadsOn(chunks: readonly Chunk[], at: number): boolean {
  let doers = 0;
  for (let k = at + 1; k < Math.min(chunks.length, at + 12); k++) {
    const c = chunks[k]!;
    if (c.kind === 'mark' || c.kind === 'break' || /^(?:if|when|once|but|so)$/.test(c.word)) return false;
    const doer =
      isSubjectPronoun(c) &&
      !isPreposition(chunks[k - 1]) &&
      (k === at + 1 || verbish(chunks, k + 1) || /'/.test(c.word));
    if (doer || (c.term?.kind === 'role' && (isModal(chunks[k + 1]) || isCopula(chunks[k + 1])))) doers++;
    if (doers > 1 || (doers === 1 && k > at + 1 && !isSubjectPronoun(chunks[at + 1]) && isDeterminer(chunks[at + 1])))
      return true;
  }
  return false;
}

/** Small words that close a verb ("clipped down") as often as they open a phrase. */
export const PARTICLES = /^(?:in|on|up|down|off|out|over|around|back|through)$/;

/** "I think that", "she says", "he wants": what follows is said, not a new clause. */
export const saysThat = (chunk: Chunk) => chunk.verb?.use === 'say' || /^(?:like|sure)$/.test(chunk.word);

export const opensWithTime = (current: readonly Chunk[]) => current.length > 1 && current.at(-1)!.kind === 'time';

/** "Call the city today | figure ten yards": the day is the plan's; "it's set | tomorrow call him" the next one's. */
export const isPlan = (current: readonly Chunk[]) =>
  /^(?:imperative|modal|owed)$/.test(predicateOf(current).predicate) &&
  !current.slice(0, -1).some((c) => c.kind === 'time');

/** "Won't shut off", "doesn't latch": a flaw that is said as a verb is. */
export const refuses = (chunk: Chunk) =>
  chunk.term?.kind === 'defect' && /^(?:won't|wont|doesn't|doesnt|don't|dont|isn't|not) /.test(chunk.word);

/** "Have the carpenter ...": the coming verb is his, not a new order. */
export function awaitsVerb(current: readonly Chunk[]): boolean {
  const have = current.findLastIndex((c) => c.word === 'have' || c.word === 'get' || c.word === 'let');
  return (
    have >= 0 &&
    have >= current.length - 4 &&
    (current[have]!.word === 'let' || current.slice(have + 1).some((c) => c.term?.kind === 'role')) &&
    !current.slice(have + 1).some((c) => c.verb?.forms.has('base') && !isNounTerm(c))
  );
}

export function isOrder(chunks: readonly Chunk[], i: number): boolean {
  const before = chunks[i - 1]!;
  if (!isImperativeAt(chunks, i) || before.owner !== undefined) return false;
  if (/^(?:go|come)$/.test(chunks[i]!.word) && isNounTerm(before)) return false;
  // "went to check the...", "helped move the..." are no orders.
  return (
    before.word !== 'to' &&
    !/^(?:not|never|no|just|always|also|is|are|was|were|be|been|it's|that's|too|so|very|still|all|really|pretty|nobody|somebody|someone|who)$/.test(
      before.word,
    ) &&
    !(isNounTerm(chunks[i]) && (isNounTerm(before) || before.term?.kind === 'finish')) &&
    !isModal(before) &&
    !(before.verb && !before.verb.forms.has('past') && before.kind === 'word')
  );
}

export function verbish(chunks: readonly Chunk[], i: number): boolean {
  const chunk = chunks[i];
  if (!chunk) return false;
  return (
    Boolean(chunk.verb) ||
    isCopula(chunk) ||
    isModal(chunk) ||
    /^(never|just|already|also|still|only|really|always|had|has|have)$/.test(chunk.word)
  );
}

/** How many chunks at the end of `current` form the noun phrase that the coming verb speaks of. */
export function subjectBefore(current: readonly Chunk[]): number {
  let n = 0;
  let sawNoun = false;
  for (let k = current.length - 1; k >= 0; k--) {
    const chunk = current[k]!;
    // "two of them still need ends"
    if (/^(?:them|those|still)$/.test(chunk.word) && (current[k - 1]?.word === 'of' || chunk.word === 'still')) {
      if (chunk.word === 'still') {
        n = current.length - k;
        continue;
      }
      return current[k - 2]?.quantity ? current.length - k + 2 : 0;
    }
    if (chunk.term?.kind === 'area' && n > 0 && !isDeterminer(current[k - 1]) && !isPreposition(current[k - 1]))
      return current.length - k;
    if (/^(?:it|them|that)$/.test(chunk.word) && isPreposition(current[k - 1]) && k > 1) {
      n = current.length - k + 1;
      k--;
      continue;
    }
    if (isDeterminer(chunk)) {
      n = current.length - k;
      const before = current[k - 1];
      // "the drain in the wall": go on past a preposition to the noun that it hangs on.
      if (
        isPreposition(before) &&
        !/^(out|up|down|off)$/.test(before!.word) &&
        (isNounTerm(current[k - 2]) || (current[k - 2]?.kind === 'word' && isDeterminer(current[k - 3])))
      ) {
        k--;
        continue;
      }
      return n;
    }
    if (
      isNounTerm(chunk) ||
      (chunk.kind === 'word' &&
        !chunk.verb &&
        !isPreposition(chunk) &&
        !CONJUNCTIONS.has(chunk.word) &&
        !isSubjectPronoun(chunk) &&
        !SUBORDINATORS.has(chunk.word) &&
        /^[a-z]/.test(chunk.word) &&
        !/(ly|n't)$/.test(chunk.word) &&
        !STRANDED.has(chunk.word))
    ) {
      sawNoun ||= true;
      n = current.length - k;
      continue;
    }
    if (chunk.kind === 'number' && chunk.notQuantity?.kind === 'label') {
      n = current.length - k;
      continue;
    }
    break;
  }
  return sawNoun ? n : 0;
}

const STRANDED = new Set(
  'now too it them him her me us already just still again today here there done good ok okay fine all yet though only'.split(
    ' ',
  ),
);

/** Does a new clause begin at `i` (after "and")? It does where a verb of its own stands before the next division. */
export function startsClause(chunks: readonly Chunk[], at: number): boolean {
  let i = at;
  while (chunks[i] && /^(?:now|then|so|just|also|still|only|maybe|probably|finally)$/.test(chunks[i]!.word)) i++;
  const first = chunks[i];
  if (!first) return false;
  if (first.word === 'that' && chunks[i + 1]?.verb?.forms.has('past')) return true;
  if (isSubjectPronoun(first) && verbish(chunks, i + 1)) return true;
  if (isSubjectPronoun(first) && /'/.test(first.word)) return true;
  if (isImperativeAt(chunks, i) || isHaveDo(chunks, i)) return true;
  if (first.verb && !isNounTerm(first) && !first.verb.forms.has('ing')) return true;
  if (isCopula(first) || isModal(first)) return true;
  for (let k = i; k < Math.min(chunks.length, i + 9); k++) {
    const chunk = chunks[k]!;
    if (
      chunk.kind === 'break' ||
      chunk.kind === 'mark' ||
      (k > i && CONJUNCTIONS.has(chunk.word)) ||
      SUBORDINATORS.has(chunk.word) ||
      (k > i && chunk.kind === 'time' && !isImperativeAt(chunks, k + 1))
    )
      return false;
    if (k > i && (isCopula(chunk) || isModal(chunk) || /^(needs|need|has|have|had|gotta|wants)$/.test(chunk.word)))
      return true;
    if (chunk.owner && isPredicative(chunks, k + 1)) return true;
    if (
      k > i &&
      chunk.verb &&
      !isNounTerm(chunk) &&
      (chunk.verb.forms.has('past') || chunk.verb.forms.has('s')) &&
      isNounTerm(chunks[k - 1])
    )
      return true;
    if (k > i && ((chunk.kind === 'time' && isImperativeAt(chunks, k + 1)) || refuses(chunk))) return true;
  }
  return false;
}
