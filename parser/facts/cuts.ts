import {
  awaitsVerb,
  isListed,
  isOrder,
  isPlan,
  leadsOn,
  leavesOutI,
  NOMINATIVE,
  opensWithTime,
  PARTICLES,
  refuses,
  saysThat,
  startsClause,
  subjectBefore,
  tellsOf,
  verbish,
} from './boundaries.ts';
import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from './chunks.ts';
import { isHaveDo } from './imperative.ts';
import { isPredicative, predicateOf } from './predicate.ts';
import { CONJUNCTIONS, HAVES, SUBORDINATORS } from './words.ts';

/** Where talk begins to say another thing with no stop or comma to tell, and by what. */
export interface Cut {
  by: 'and' | 'word' | 'run-on';
  /** How many chunks of the clause so far belong to the new one (its subject, met before its verb). */
  back: number;
}

/** Whether a new clause begins at chunk `i`, behind the clause so far; null where the clause goes on. */
export function cutBefore(chunks: readonly Chunk[], i: number, current: readonly Chunk[]): Cut | null {
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
  // "The tile is on order".
  if (word === 'order' && before.word === 'on') return null;
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
    return { by: 'run-on', back: before.kind === 'time' && opensWithTime(current) && !isPlan(current) ? 1 : 0 };
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
  // "Ripped out the vanity | found the shutoffs frozen", "... frozen | gonna have him swap both": whoever talks leaves "I" out.
  if (
    hasSaid &&
    current.length > 1 &&
    /^(?:gonna|gotta|wanna)$/.test(word) &&
    !isSubjectPronoun(before) &&
    !isCopula(before) &&
    before.kind !== 'word' &&
    before.term?.kind !== 'role'
  )
    return { by: 'run-on', back: 0 };
  if (
    hasSaid &&
    chunk.kind === 'word' &&
    chunk.verb?.forms.has('past') &&
    !chunk.verb.forms.has('base') &&
    isNounTerm(before) &&
    before.term!.kind !== 'role' &&
    next &&
    (isDeterminer(next) || next.kind === 'quantity') &&
    leavesOutI(current)
  )
    return { by: 'run-on', back: 0 };
  // A new subject whose verb is met here: "... gas is on | fridge is in too".
  const predicateHere =
    (isCopula(chunk) && !/^(got|get|gets|getting|come|comes|came|been|be|being|looks|feels)$/.test(word)) ||
    (chunk.owner !== undefined && isPredicative(chunks, i + 1)) ||
    (isModal(chunk) && !/'/.test(word.replace(/n't$/, ''))) ||
    refuses(chunk) ||
    /^(needs|has|have|had|gotta|wants)$/.test(word) ||
    (/^(?:go|goes|comes?|came)$/.test(word) && isNounTerm(before) && !awaitsVerb(current)) ||
    (word === 'need' && (isNounTerm(before) || before.word === 'them' || before.word === 'still')) ||
    (chunk.verb !== undefined &&
      !chunk.verb.forms.has('base') &&
      chunk.verb.forms.has('past') &&
      next !== undefined &&
      !isNounTerm(next) &&
      isNounTerm(before) &&
      chunk.kind === 'word') ||
    (chunk.verb?.forms.has('s') &&
      !isNounTerm(chunk) &&
      (isNounTerm(before) || (before.kind === 'word' && isDeterminer(chunks[i - 2]) && chunk.verb.use === 'say')));
  if (predicateHere) {
    const back = subjectBefore(current);
    const rest = current.slice(0, current.length - back);
    if (
      back > 0 &&
      rest.length &&
      (predicateOf(rest).predicate !== 'none' || isListed(rest, current[rest.length]!)) &&
      (!isPreposition(rest.at(-1)) || (isCopula(rest.at(-2)) && PARTICLES.test(rest.at(-1)!.word))) &&
      !saysThat(rest.at(-1)!) &&
      !tellsOf(rest) &&
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
    if (
      chunk.owner !== undefined &&
      hasSaid &&
      (back === 0 || (isPreposition(rest.at(-1)) && isNounTerm(before))) &&
      !isDeterminer(before)
    )
      return { by: 'run-on', back: 0 };
    if (chunk.owner !== undefined && hasSaid && isDeterminer(before) && !SUBORDINATORS.has(chunks[i - 2]?.word ?? ''))
      return { by: 'run-on', back: 1 };
  }
  return null;
}
