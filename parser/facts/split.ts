import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import { isHaveDo, isImperativeAt, isPredicative, predicateOf } from './predicate.ts';
import { CONJUNCTIONS, HAVES, SUBORDINATORS } from './words.ts';

/** A stretch of talk with one thing to say, before its grammar is laid open. */
export interface Stretch {
  chunks: Chunk[];
  joinedBy: 'start' | 'stop' | 'comma' | 'and' | 'word' | 'run-on';
  sentence: number;
}

const STOPS = new Set(['.', ';', '!', '?', '•', '*', '·', '|']);

/**
 * Divides talk into clauses. Marks divide where they are; run-on dictation is divided where a new subject or a new
 * order begins after the clause has said its thing.
 */
export function splitClauses(chunks: readonly Chunk[]): Stretch[] {
  const out: Stretch[] = [];
  let current: Chunk[] = [];
  let joinedBy: Stretch['joinedBy'] = 'start';
  let sentence = 0;
  const close = (next: Stretch['joinedBy']) => {
    if (current.length) out.push({ chunks: current, joinedBy, sentence });
    current = [];
    joinedBy = next;
  };
  for (let i = 0; i < chunks.length; i++) {
    const chunk = chunks[i]!;
    if (
      chunk.word === '.' &&
      /^(?:mrs?|ms|dr|st|approx|no)$/.test(chunks[i - 1]?.word ?? '') &&
      chunks[i + 1]?.kind === 'word'
    )
      continue;
    if (chunk.kind === 'break' || (chunk.kind === 'mark' && STOPS.has(chunk.word))) {
      close('stop');
      sentence++;
      continue;
    }
    if (
      chunk.kind === 'mark' &&
      (chunk.word === ':' || chunk.word === '-' || chunk.word === '–' || chunk.word === '—')
    ) {
      // "BR3 closet: R13 batts", "closer slams - adjusted"; a hyphen without blanks joins.
      const spaced = chunks[i + 1] !== undefined && chunks[i + 1]!.start > chunk.end;
      if (
        (chunk.word === ':' && chunks[i - 1]?.word !== 're') ||
        (spaced && (i === 0 || chunks[i - 1]!.end < chunk.start)) ||
        chunk.word === '—'
      ) {
        close(chunk.word === ':' ? 'stop' : 'comma');
        continue;
      }
    }
    if (chunk.kind === 'mark' && chunk.word === ',') {
      close('comma');
      continue;
    }
    if (chunk.kind === 'mark' && (chunk.word === '"' || chunk.word === '“' || chunk.word === '”')) continue;
    if (current.length) {
      const cut = cutBefore(chunks, i, current);
      if (cut) {
        if (cut.back) {
          const moved = current.splice(current.length - cut.back);
          close(cut.by);
          current = moved;
        } else close(cut.by);
      }
    }
    current.push(chunk);
  }
  close('stop');
  return out;
}

interface Cut {
  by: Stretch['joinedBy'];
  /** How many chunks of the clause so far belong to the new one (its subject, met before its verb). */
  back: number;
}

function cutBefore(chunks: readonly Chunk[], i: number, current: readonly Chunk[]): Cut | null {
  const chunk = chunks[i]!;
  const before = chunks[i - 1]!;
  const next = chunks[i + 1];
  const word = chunk.word;
  const linked =
    (isPreposition(before) &&
      !((isSubjectPronoun(chunk) || chunk.verb) && PARTICLES.test(before.word)) &&
      // "... where it was coming from | I bent it back": these never follow a preposition.
      !(NOMINATIVE.test(word) && !/^(?:than|like|as)$/.test(before.word))) ||
    SUBORDINATORS.has(before.word) ||
    CONJUNCTIONS.has(before.word) ||
    (isModal(before) && !/^(?:i|we|he|she|they)'/.test(word)) ||
    before.word === 'to';

  // "two or three tubes"
  if (word === 'or' && before.quantity && next?.quantity) return null;
  // "Let it dry then sand": behind "then" even a word that is mostly a noun is an order.
  if (word === 'then' && next?.verb?.forms.has('base') && !next.owner && before.word !== 'and')
    return { by: 'and', back: 0 };
  if (chunk.kind === 'word' && /^(and|plus|&|\+|or|then)$/.test(word))
    return startsClause(chunks, i + 1) ? { by: 'and', back: 0 } : null;
  if (chunk.kind === 'mark' && (word === '&' || word === '+'))
    return startsClause(chunks, i + 1) ? { by: 'and', back: 0 } : null;
  if (chunk.kind === 'word' && /^(but|cause|cuz|because|anyway|anyways|otherwise|oh|okay|ok|also)$/.test(word)) {
    if ((word === 'ok' || word === 'okay' || word === 'also') && isCopula(before)) return null;
    return { by: 'word', back: 0 };
  }
  if (
    chunk.kind === 'word' &&
    word === 'so' &&
    next &&
    !(next.word === 'that' && !/^(?:wants|gets|needs|is|one|has|goes)$/.test(chunks[i + 2]?.word ?? '')) &&
    !/^(much|many|far|bad|hard|hot|tight|loose|it'll)$/.test(next.word) &&
    !isCopula(before)
  )
    return { by: 'word', back: 0 };
  if (word === 'only' && next?.word === 'thing') return { by: 'run-on', back: 0 };
  if (linked) return null;

  const hasSaid =
    current.length > 1 || current[0]?.verb !== undefined ? predicateOf(current).predicate !== 'none' : false;
  if (hasSaid && /^(?:if|when|once|unless)$/.test(word) && chunk.kind === 'word' && leadsOn(chunks, i))
    return { by: 'word', back: 0 };
  if (isSubjectPronoun(chunk) && next && word !== 'that' && !saysThat(before)) {
    if (word === 'there' && !isCopula(next)) return null;
    if (verbish(chunks, i + 1) || /'|^(its|thats|theres|ive|ill|hes|shes|theyre|weve|there)$/.test(word))
      return hasSaid || current.length > 2 ? { by: 'run-on', back: 0 } : null;
  }
  if (word === "that's" || (word === 'that' && isCopula(next))) return hasSaid ? { by: 'run-on', back: 0 } : null;
  if (isHaveDo(chunks, i) && !isSubjectPronoun(before)) return { by: 'run-on', back: 0 };
  if (
    hasSaid &&
    chunk.verb &&
    !isSubjectPronoun(before) &&
    !isDeterminer(before) &&
    !awaitsVerb(current) &&
    isOrder(chunks, i)
  )
    return { by: 'run-on', back: before.kind === 'time' && opensWithTime(current) ? 1 : 0 };
  // "... fine with it | used half a tub", "... three quarters | need one sheet".
  const goodsVerb =
    (chunk.verb?.use === 'use' && word !== 'use') ||
    /^(?:bought|picked|grabbed|ordered)$/.test(word) ||
    (word === 'need' && !isNounTerm(before) && next !== undefined && next.word !== 'to') ||
    (word === 'got' && next?.kind === 'quantity');
  if (
    hasSaid &&
    goodsVerb &&
    (!isSubjectPronoun(before) || isPreposition(chunks[i - 2])) &&
    !isCopula(before) &&
    !HAVES.has(before.word) &&
    !isDeterminer(before) &&
    chunk.kind === 'word' &&
    !/^(?:and|already|just|also|only|still|never)$/.test(before.word)
  )
    return { by: 'run-on', back: 0 };
  // A new subject whose verb is met here: "... gas is on | fridge is in too".
  const predicateHere =
    (isCopula(chunk) && !/^(got|get|gets|getting|come|comes|came|been|be|being|looks|feels)$/.test(word)) ||
    (chunk.owner !== undefined && isPredicative(chunks, i + 1)) ||
    (isModal(chunk) && !/'/.test(word.replace(/n't$/, ''))) ||
    /^(needs|has|have|had|gotta|wants)$/.test(word) ||
    (/^(?:go|goes|comes?|came)$/.test(word) && isNounTerm(before)) ||
    (word === 'need' && (isNounTerm(before) || before.word === 'them' || before.word === 'still')) ||
    (chunk.verb !== undefined &&
      !chunk.verb.forms.has('base') &&
      chunk.verb.forms.has('past') &&
      next !== undefined &&
      !isNounTerm(next) &&
      isNounTerm(before) &&
      chunk.kind === 'word') ||
    (chunk.verb?.forms.has('s') && !isNounTerm(chunk) && isNounTerm(before));
  if (predicateHere) {
    const back = subjectBefore(current);
    const rest = current.slice(0, current.length - back);
    if (
      back > 0 &&
      rest.length &&
      (predicateOf(rest).predicate !== 'none' || isListed(rest, current[rest.length]!)) &&
      !isPreposition(rest.at(-1)) &&
      !saysThat(rest.at(-1)!) &&
      (!SUBORDINATORS.has(rest.at(-1)!.word) || (rest.at(-1)!.word === 'that' && isPreposition(rest.at(-2))))
    )
      return { by: 'run-on', back };
    // "... are dry | didn't need the tube"
    if (
      back === 0 &&
      hasSaid &&
      isModal(chunk) &&
      !isSubjectPronoun(before) &&
      !isNounTerm(before) &&
      before.kind === 'word' &&
      !/^(?:that|which|who|it|they|this|one)$/.test(before.word)
    )
      return { by: 'run-on', back: 0 };
    if (chunk.owner !== undefined && hasSaid && back === 0 && !isDeterminer(before)) return { by: 'run-on', back: 0 };
    if (chunk.owner !== undefined && hasSaid && isDeterminer(before) && !SUBORDINATORS.has(chunks[i - 2]?.word ?? ''))
      return { by: 'run-on', back: 1 };
  }
  return null;
}

/** "A roll of tape | the ridge is sagging": a thing named by itself, then another by article. */
const isListed = (rest: readonly Chunk[], next: Chunk) =>
  isDeterminer(next) &&
  next.word !== 'all' &&
  rest.length > 1 &&
  (isNounTerm(rest.at(-1)) || rest.at(-1)!.kind === 'time' || rest.at(-1)!.kind === 'quantity');

/** Never behind a preposition or a helping verb. */
const NOMINATIVE = /^(?:i|we|he|she|they)(?:'\w+)?$/;

/** "... if it rains | we push it": the condition leads where a second doer follows it before any mark. */
function leadsOn(chunks: readonly Chunk[], at: number): boolean {
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
const PARTICLES = /^(?:in|on|up|down|off|out|over|around|back|through)$/;

/** "I think that", "she says", "he wants": what follows is said, not a new clause. */
const saysThat = (chunk: Chunk) => chunk.verb?.use === 'say' || chunk.word === 'like';

const opensWithTime = (current: readonly Chunk[]) => current.length > 1 && current.at(-1)!.kind === 'time';

/** "Have the carpenter ...": the coming verb is his, not a new order. */
function awaitsVerb(current: readonly Chunk[]): boolean {
  const have = current.findLastIndex((c) => c.word === 'have' || c.word === 'get' || c.word === 'let');
  return (
    have >= 0 &&
    have >= current.length - 4 &&
    (current[have]!.word === 'let' || current.slice(have + 1).some((c) => c.term?.kind === 'role')) &&
    !current.slice(have + 1).some((c) => c.verb?.forms.has('base') && !isNounTerm(c))
  );
}

function isOrder(chunks: readonly Chunk[], i: number): boolean {
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

function verbish(chunks: readonly Chunk[], i: number): boolean {
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
function subjectBefore(current: readonly Chunk[]): number {
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
        !/^(out|up|down|off|over)$/.test(before!.word) &&
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
function startsClause(chunks: readonly Chunk[], at: number): boolean {
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
    if (k > i && chunk.kind === 'time' && isImperativeAt(chunks, k + 1)) return true;
  }
  return false;
}
