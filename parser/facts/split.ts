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
import { isHaveDo, isPredicative, predicateOf } from './predicate.ts';
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
export function splitClauses(chunks: readonly Chunk[], places?: ReadonlySet<number>): Stretch[] {
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
    // "Off track (rehung)": what was done about it, in brackets.
    if (
      chunk.word === '(' &&
      chunks[i + 1]?.verb?.forms.has('past') &&
      chunks.slice(i + 2, i + 5).some((c) => c.word === ')')
    ) {
      close('comma');
      continue;
    }
    if (chunk.kind === 'mark' && (chunk.word === '"' || chunk.word === '“' || chunk.word === '”')) continue;
    if (places?.has(chunk.start)) close('run-on');
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
