import { isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, phrase } from '../talk.ts';
import { owedInside, toldTo } from './owed.ts';
import { cutAtTime, IDLE, meant, type Plan, personIn, resolve, type Told, verbPhrase } from './told.ts';

/** "He wants photos", "owner is getting the sign", "sealer crew comes monday to seal it", "sawcuts go in tomorrow". */
export function presentPlan(talk: Told, frame: Frame, at: number, said: string): Plan | null {
  const { lemma, chunks } = frame;
  if (frame.negative) return null;
  const dated = chunks.some((c) => c.time && !c.time.past);
  if (lemma === 'come' || lemma === 'go') {
    const to = chunks.findIndex((c, k) => k > frame.verbAt && c.word === 'to' && chunks[k + 1]?.verb);
    if (to > 0 && dated)
      return {
        task: `${chunks[to + 1]!.verb!.lemma} ${phrase(resolve(talk, chunks.slice(to + 2), at))}`,
        who: personIn(frame.subject),
        confidence: 0.75,
      };
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
  const dated = datedEntry(frame) ?? datedSubject(talk, frame, at);
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

/** "Sand and prime is monday": the work stands where a thing would. */
function datedSubject(talk: Told, frame: Frame, at: number): Plan | null {
  const [head] = frame.subject;
  if (
    frame.predicate !== 'copula' ||
    !head?.verb?.forms.has('base') ||
    !frame.rest.length ||
    !frame.rest.every((c) => c.time && !c.time.past)
  )
    return null;
  const before = talk.frames[at - 1];
  const joined =
    frame.joinedBy === 'and' && before?.chunks.length === 1 && before.chunks[0]!.verb
      ? `${before.chunks[0]!.verb.lemma} and `
      : '';
  const object = phrase(frame.subject.slice(1)) || meant(talk, at);
  return { task: `${joined}${head.verb.lemma} ${object}`.trim(), who: null, confidence: 0.7 };
}

/** A plan with no verb: "2nd coat wed", "texture thurs", "paint fri (painter)". */
function datedEntry(frame: Frame): Plan | null {
  // "Dry till tomorrow" is a state of the work, not work.
  if (
    /^(?:dry|drying|wet|cure|curing|set|setting|closed|off|home|back)$/.test(frame.chunks[0]!.word) &&
    frame.chunks[0]!.kind === 'word'
  )
    return null;
  // "Boards land wednesday", "shingles show up": goods on their way are nobody's work.
  if (
    frame.chunks.some((c) =>
      /^(?:show|shows|land|lands|arrive|arrives|come|comes|deliver|delivers|here|due|eta|no)$/.test(c.word),
    )
  )
    return null;
  const time = frame.chunks.find((c) => c.time && !c.time.past && c.time.hours === undefined);
  if (
    frame.predicate !== 'none' ||
    !time ||
    frame.chunks.length > 7 ||
    frame.chunks.some((c) => c.term?.kind === 'defect' || c.quantity)
  )
    return null;
  const work = frame.chunks.filter((c) => c.kind === 'term' || c.kind === 'word');
  const named =
    work.some((c) => isNounTerm(c) && c.term!.kind !== 'area' && c.term!.kind !== 'role') ||
    work.some((c) => c.verb?.forms.has('base') || c.verb?.forms.has('ing') || c.term?.kind === 'work');
  const doing = frame.chunks[0]!.verb?.forms.has('ing') ? frame.chunks[0]! : undefined;
  const task = phrase(
    work
      .map((c) => (c === doing ? { ...c, word: c.verb!.lemma } : c))
      .filter((c) => c.term?.kind !== 'role' && !/^(?:by|on|for|due)$/.test(c.word)),
  );
  return named && task
    ? { task: task.includes(' ') ? task : `do ${task}`, who: personIn(frame.chunks), confidence: 0.6 }
    : null;
}
