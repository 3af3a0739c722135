import { isGoods, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, phrase } from '../talk.ts';
import { datedEntry, datedSubject } from './dated.ts';
import { owedInside, toldTo } from './owed.ts';
import { BUYS, cutAtTime, IDLE, meant, type Plan, personIn, resolve, type Told, verbPhrase } from './told.ts';

/** "He wants photos", "owner is getting the sign", "sealer crew comes monday to seal it", "sawcuts go in tomorrow". */
export function presentPlan(talk: Told, frame: Frame, at: number, said: string): Plan | null {
  const { lemma, chunks } = frame;
  if (frame.negative) return null;
  const dated = chunks.some((c) => c.time && !c.time.past);
  // "I owe her a price on the outlets".
  if (lemma === 'owe' && /^(?:i|we)$/.test(chunks[0]!.word) && frame.rest.length > 1)
    return { task: `send ${phrase(cutAtTime(frame.rest))}`, who: null, confidence: 0.6 };
  if (lemma === 'come' || lemma === 'go') {
    const to = chunks.findIndex((c, k) => k > frame.verbAt && c.word === 'to' && chunks[k + 1]?.verb);
    if (to > 0 && dated)
      return {
        task: `${chunks[to + 1]!.verb!.lemma} ${phrase(resolve(talk, chunks.slice(to + 2), at))}`,
        who: personIn(frame.subject),
        confidence: 0.75,
      };
    // "Doors come in Friday" are delivered then.
    if (lemma === 'come' && chunks[frame.verbAt + 1]?.word === 'in' && frame.subject.some(isGoods)) return null;
    const later = dated || /\b(?:after|once|when)\b/.test(said);
    if (later && frame.subject.length && !isPerson(frame.subject) && /\b(?:in|on|up|down|back|off)\b/.test(said))
      return {
        task: `install ${isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject)}`,
        who: null,
        confidence: 0.7,
      };
    return dated && isPerson(frame.subject) && /\b(?:back)\b/.test(said)
      ? { task: phrase(chunks.slice(frame.verbAt)), who: personIn(frame.subject), confidence: 0.7 }
      : null;
  }
  if (BUYS.test(lemma ?? '') && !personIn(frame.subject)) return null;
  if (chunks[frame.verbAt]?.verb?.forms.has('ing') && (dated || personIn(frame.subject)) && lemma && !IDLE.has(lemma))
    return { task: verbPhrase(talk, frame, at), who: personIn(frame.subject), confidence: 0.7 };
  if (
    /^(?:somebody|someone)$/.test(frame.subject[0]?.word ?? '') &&
    lemma &&
    (frame.use === 'work' || frame.use === 'see') &&
    !chunks[frame.verbAt]!.verb!.forms.has('s')
  )
    return { task: verbPhrase(talk, frame, at), who: null, confidence: 0.7 };
  if (
    dated &&
    lemma &&
    (frame.use === 'work' || /^(?:start|finish|do|look|check)$/.test(lemma)) &&
    isPerson(frame.subject)
  )
    return { task: verbPhrase(talk, frame, at), who: personIn(frame.subject), confidence: 0.7 };
  if (dated && lemma === 'rent')
    return { task: verbPhrase(talk, frame, at), who: personIn(frame.subject), confidence: 0.7 };
  return null;
}

/** Clauses with no verb that still owe something: "replace", "pickup 10:30", "adjust closer", "touch up behind bar". */
export function barePlan(talk: Told, frame: Frame, at: number, said: string): Plan | null {
  if (/\bnot to \w+|\bno \w+ (?:until|till|til|before)\b/.test(said) && frame.chunks.some((c) => c.time)) {
    const to = frame.chunks.findIndex((c) => c.word === 'to' || c.word === 'no');
    const verb = frame.chunks[to + 1];
    if (verb)
      return {
        task: `${verb.verb?.lemma ?? verb.word} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(to + 2), at))) || meant(talk, at)}`.trim(),
        who: personIn(frame.chunks),
        confidence: 0.7,
        held: true,
      };
  }
  const role = personIn(frame.subject);
  const told = toldTo(talk, frame, at);
  if (told) return told;
  const doing = frame.predicate === 'copula' ? frame.rest.find((c) => /ing$/.test(c.word) && c.verb) : undefined;
  if (doing?.verb && role && !IDLE.has(doing.verb.lemma))
    return {
      task: `${doing.verb.lemma} ${phrase(cutAtTime(resolve(talk, frame.rest.slice(frame.rest.indexOf(doing) + 1), at)))}`.trim(),
      who: role,
      confidence: 0.75,
    };
  if (/\b(?:going|goes|go) back\b/.test(said) && !isPerson(frame.subject))
    return {
      task: `send back ${isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject)}`,
      who: null,
      confidence: 0.7,
    };
  const owed = owedInside(frame);
  if (owed) return owed;
  const dated = datedEntry(talk, frame, at) ?? datedSubject(talk, frame, at);
  if (dated) return dated;
  const verb = frame.chunks[0];
  if (
    frame.predicate === 'none' &&
    verb?.verb?.forms.has('base') &&
    !verb.verb.forms.has('past') &&
    !isNounTerm(verb) &&
    frame.chunks.length === 1 &&
    !IDLE.has(verb.verb.lemma)
  )
    return { task: `${verb.verb.lemma} ${meant(talk, at)}`, who: null, confidence: 0.7 };
  return null;
}
