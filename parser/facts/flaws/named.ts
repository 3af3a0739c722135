import { type Chunk, isDeterminer, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, nounPhraseFrom, phrase, type Talk, thingIn } from '../talk.ts';
import { isNegative, isSmall } from '../words.ts';
import { type Flaw, placeAfter, subjectWords, thingOf } from './flaw.ts';
import { flawWordIn } from './flawWord.ts';
import { ails, malfunctionOf } from './words.ts';

/** A defect word of the vocabulary, said of a thing. */
export function defects(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks } = frame;
  const k = flawWordIn(frame);
  if (k < 0) {
    const unsaid = unwell(talk, frame, at);
    return unsaid.length ? unsaid : comesIn(frame);
  }
  // "I split the difference", "burned through two bags": what somebody did, unless it harmed a thing.
  if (frame.verbAt === k && isPerson(frame.subject) && !harms(frame)) return [];
  if (frame.predicate === 'owed' || (frame.predicate === 'modal' && !frame.negative && k > frame.verbAt)) return [];
  // "The wet insulation is bagged": told to say which, in talk of what was done with it.
  const doneWith = frame.predicate === 'past' || frame.predicate === 'copula' ? frame.rest[0]?.verb : undefined;
  if (
    k < frame.verbAt &&
    isNounTerm(chunks[k + 1]) &&
    (frame.predicate === 'past' || doneWith?.forms.has('participle'))
  )
    return [];
  const defect = chunks[k]!;
  const next = chunks[k + 1];
  const span = { start: frame.start, end: frame.end };
  const conf = 0.8;
  // "I cracked one", "we scratched the door" is still a problem; "he left runs on the sills" too.
  const place = placeAfter(chunks, k);
  if (
    next &&
    (isNounTerm(next) || isNamed(chunks, k)) &&
    !(
      frame.verbAt >= 0 &&
      k > frame.verbAt &&
      frame.predicate === 'copula' &&
      chunks.slice(0, frame.verbAt + 1).some(isNounTerm)
    )
  ) {
    const noun = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1));
    return [{ thing: [...noun, ...place], defect: defect.word, span, rule: 'problem/defect-before', confidence: conf }];
  }
  const spoken =
    isPerson(frame.subject) ||
    (frame.subject.length === 0 &&
      isDeterminer(frame.rest[0]) &&
      /^(?:crack|break|scratch|chip|ding|dent|gouge|nick|tear|snap|shatter)$/.test(frame.lemma ?? ''));
  if (frame.verbAt === k && spoken) {
    const object = thingIn(frame.rest);
    if (object.length) return [{ thing: object, defect: defect.word, span, rule: 'problem/did', confidence: conf }];
  }
  const subject =
    frame.verbAt >= 0 && frame.verbAt < k && frame.subject.some(isNounTerm) ? frame.subject : chunks.slice(0, k);
  const before = subjectWords(subject);
  if (
    before.some((c) => isNounTerm(c) || (c.kind === 'word' && !c.verb && /^[a-z]{4,}/.test(c.word))) &&
    !isPointer(before) &&
    !isPerson(frame.subject)
  )
    return [
      {
        thing: before,
        defect: phrase(chunks.slice(k, Math.min(k + 3, chunks.length))),
        span,
        rule: 'problem/defect-after',
        confidence: conf,
      },
    ];
  if (place.length && !(frame.predicate === 'copula' && /^(?:it's|its|they're|it|they)$/.test(chunks[0]!.word)))
    return [{ thing: [...place, defect], defect: defect.word, span, rule: 'problem/defect-in', confidence: conf }];
  const named = thingOf(talk, frame, at);
  if (!named.length && !before.length) return [];
  return [
    {
      thing: before.length && !isPointer(before) && !isPerson(frame.subject) ? before : named,
      defect: phrase(chunks.slice(k, k + 2)),
      span,
      rule: 'problem/defect',
      confidence: 0.7,
    },
  ];
}

const SMALL_TALK =
  /^(?:traffic|weather|day|days|week|morning|coffee|wife|kids?|truck|van|phone|game|lunch|back|head|knees?|drive|news|life|line|guys?|crew|wind|sun|rain|music|radio)$/;

/** "Water's coming in around the chimney", "daylight under the door": what should stay out. */
function comesIn(frame: Frame): Flaw[] {
  const { chunks } = frame;
  const what = chunks.findIndex((c) =>
    /^(?:water|rain|daylight|air|wind|light|bugs|mice|sewage|smoke)(?:'s)?$/.test(c.word),
  );
  const how = chunks.findIndex(
    (c, i) =>
      i > what &&
      (/^(?:getting|coming|comes|came|gets|got|blowing|running|pouring|leaking|dripping|backing)$/.test(c.word) ||
        (/^(?:daylight|sewage)/.test(chunks[what]?.word ?? '') && i === what + 1)) &&
      !isNegative(c.word),
  );
  const prep = chunks.findIndex(
    (c, i) => i >= how && /^(?:around|under|through|behind|at|by|from|above|between|into|past)$/.test(c.word),
  );
  if (what < 0 || how < 0 || prep < 0 || frame.negative || isPerson(frame.subject)) return [];
  const place = placeAfter(chunks, prep - 1);
  if (!place.length) return [];
  const span = { start: frame.start, end: frame.end };
  return [{ thing: place, defect: phrase(chunks.slice(what, prep)), span, rule: 'problem/comes-in', confidence: 0.65 }];
}

/** Everyday words of malfunction and ailment, said of a thing: "the gate droops", "outlet's wonky", "drywall by the tub spongy". */
function unwell(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks, predicate, verbAt, subject } = frame;
  if (frame.negative || isPerson(subject) || /^(?:imperative|owed|modal)$/.test(predicate)) return [];
  const k = chunks.findIndex((c, i) => {
    if (i === 0 || isNounTerm(c)) return false;
    if (malfunctionOf(c))
      return (
        i === verbAt ||
        (i > verbAt && predicate === 'copula' && /(?:ing|ed)$/.test(c.word)) ||
        (predicate === 'none' && /(?:s|ed|ing|ank|unk|oze|ound|ook|uck)$/.test(c.word))
      );
    return (
      ails(c) &&
      ((predicate === 'copula' && i > verbAt && i <= verbAt + 4) ||
        (predicate === 'none' && i === chunks.length - 1 && !isDeterminer(chunks[i - 1])))
    );
  });
  if (k < 0) return [];
  const thing = thingOf(talk, frame, at);
  if (!thing.length || thing.some((c) => SMALL_TALK.test(c.word.replace(/'s$/, '')))) return [];
  const span = { start: frame.start, end: frame.end };
  return [{ thing, defect: phrase(chunks.slice(k, k + 3)), span, rule: 'problem/unwell', confidence: 0.65 }];
}

/** "Three rotted sheets": what the flaw's adjective stands before, though the vocabulary lacks it. */
const isNamed = (chunks: readonly Chunk[], k: number) => {
  const next = chunks[k + 1];
  return (
    /(?:ed|en|y)$/.test(chunks[k]!.word) &&
    (chunks[k - 1]?.quantity !== undefined || isDeterminer(chunks[k - 1])) &&
    next?.kind === 'word' &&
    !next.verb &&
    !isSmall(next.word)
  );
};

const HARM =
  /^(?:crack|break|scratch|chip|dent|ding|tear|bend|gouge|crush|nick|scuff|stain|mark|smear|bend|miscut|damage|puncture|snap|shatter|scuff|kink|mar|split|strip|overtighten|spill|drop)$/;

/** "I cracked one", "he dinged the siding". */
const harms = (frame: Frame) =>
  HARM.test(frame.lemma ?? '') &&
  /^(?:the|a|an|one|two|my|his|their|that|it|them)$/.test(frame.rest[0]?.word ?? '') &&
  !/^(?:difference|old)$/.test(frame.rest[1]?.word ?? '');
