import { type Chunk, isCopula, isDeterminer, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, nounPhraseFrom, phrase, type Talk, thingIn } from '../talk.ts';
import { isNegative, isSmall } from '../words.ts';
import { isWorkOn } from '../workNotHarm.ts';
import { type Flaw, isNegativeBefore, placeAfter, subjectWords, thingOf } from './flaw.ts';
import { ails, malfunctionOf } from './words.ts';

/** A defect word of the vocabulary, said of a thing. */
export function defects(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks } = frame;
  const k = chunks.findIndex(
    (c, i) =>
      (c.term?.kind === 'defect' ||
        isFlawNoun(chunks, i) ||
        isMark(frame, i) ||
        isHarmed(frame, i) ||
        isBad(chunks, i)) &&
      !isNegativeBefore(chunks, i) &&
      !isDeedNoun(chunks, i) &&
      !isWorkOn(chunks, i),
  );
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

/** Harm told as a state, in words that are also work: "joists are notched to bits", "the box is buried", "floor vent painted over". */
const HARMED =
  /^(?:notched|charred|offset|buried|disconnected|unhooked|unplugged|severed|pierced|hacked|butchered|mangled|bled|floated|flooded|faults?|bounces?|sagged|dumps?|pools?|lapped|chewed|bitten|misplaced|mixed up|lifted|shifted|slipped|fallen|frayed|reversed|overcut|gapped|choked|starved|failing|unfinished|exposed|bare)$/;

function isHarmed(frame: Frame, k: number): boolean {
  const { chunks } = frame;
  const word = chunks[k]!.word;
  const subject = frame.subject.length > 0 && !isPerson(frame.subject);
  if (word === 'over' && /^(?:painted|drywalled|tiled|mudded|plastered|caulked)$/.test(chunks[k - 1]?.word ?? ''))
    return true;
  if (word === 'back' && chunks[k - 1]?.word === 'set' && chunks[k + 1]?.quantity) return true;
  if (/^(?:uphill|backwards?)$/.test(word) && subject) return true;
  if (word === 'open' && chunks[k - 1]?.word === 'seam') return true;
  if (
    word === 'out' &&
    /^(?:lights?|bulbs?|lamps?|pilot|power)$/.test(frame.subject.find(isNounTerm)?.word ?? '') &&
    k === chunks.length - 1
  )
    return true;
  if (
    word === 'running' &&
    frame.predicate === 'copula' &&
    frame.subject.some((c) => /^(?:toilet|toilets|urinal|commode|faucet|tap)(?:'s)?$/.test(c.word))
  )
    return true;
  if (
    word === 'out' &&
    frame.predicate === 'none' &&
    k === chunks.length - 1 &&
    chunks.slice(0, k).some((c) => /\b(?:lights?|bulbs?|lamps?|pilot)\b/.test(c.word))
  )
    return true;
  if (
    word === 'off' &&
    isCopula(chunks[k - 1]) &&
    k === chunks.length - 1 &&
    frame.predicate === 'copula' &&
    subject &&
    !frame.subject.some((c) =>
      /^(?:gas|water|power|heat|breakers?|main|lights?|fans?|pump|furnace|ac|heater|it|that|everything)(?:'s)?$/.test(
        c.word,
      ),
    )
  )
    return true;
  if (word === 'low' && k === chunks.length - 1 && frame.predicate === 'none' && chunks.some(isNounTerm)) return true;
  if (
    /^(?:way|right)$/.test(word) &&
    /^(?:in the way|right where)$/.test(
      word === 'way'
        ? chunks
            .slice(k - 2, k + 1)
            .map((c) => c.word)
            .join(' ')
        : `${word} ${chunks[k + 1]?.word}`,
    )
  )
    return true;
  return (
    HARMED.test(word) &&
    chunks[k]!.kind !== 'quantity' &&
    (subject || (frame.predicate === 'none' && k > 0)) &&
    k >= frame.verbAt
  );
}

/** "There's a bad connector", "the ground is faulty": but "not bad" and "a bad day". */
const isBad = (chunks: readonly Chunk[], k: number) =>
  /^(?:bad|faulty|defective|sketchy|janky|iffy)$/.test(chunks[k]!.word) &&
  (k === chunks.length - 1 ||
    isNounTerm(chunks[k + 1]) ||
    (chunks[k + 1]?.kind === 'word' && /^(?:a|some|no|the)$/.test(chunks[k - 1]?.word ?? ''))) &&
  !/^(?:day|days|news|weather|idea|shape|luck|back|traffic|guy|time|mood|for)$/.test(chunks[k + 1]?.word ?? '') &&
  !/^(?:so|too|not|half)$/.test(chunks[k - 1]?.word ?? '');

/** "Ceiling stain in the hall", "gap at the tray": an entry of a list that names a mark and its place. */
function isMark({ chunks, predicate }: Frame, k: number): boolean {
  if (predicate !== 'none' || !/^(?:in|on|at|by|behind|under|along|around|near)$/.test(chunks[k + 1]?.word ?? ''))
    return false;
  const word = chunks[k]!.word;
  if (/^stains?$/.test(word)) return /^(?:ceiling|wall|water|floor|carpet|rust)$/.test(chunks[k - 1]?.word ?? '');
  return (
    /^(?:holes?|gaps?|marks?|dents?|bumps?|humps?|scratch|scratches|gouges?)$/.test(word) && !chunks.some((c) => c.time)
  );
}

/** "That stain on the ceiling", "the wall have hole", "the beam has a crown in it": a mark or shape where none should be. */
function isFlawNoun(chunks: readonly Chunk[], k: number): boolean {
  if (
    !/^(?:stains?|holes?|spots?|marks?|dents?|humps?|bumps?|bulges?|rocks?|gaps?|crowns?|dips?|twist|bow|belly|lumps?|voids?|bubbles?|lines?|streaks?|waves?|ripples?|ridges?|lip|step|odor|smell|hum|draft|splice|rub)$/.test(
      chunks[k]!.word,
    )
  )
    return false;
  const before = chunks
    .slice(Math.max(0, k - 4), k)
    .map((c) => c.word)
    .join(' ');
  if (
    /\b(?:has|have|had|got|there's|theres|there is|there are|with a)\b/.test(before) &&
    !/^(?:screw|saw|plug|ups?)$/.test(chunks[k + 1]?.word ?? '') &&
    !/\bto\b/.test(before)
  )
    return (
      /^(?:holes?|gaps?|stains?|dents?|humps?|bumps?|bulges?|crowns?|dips?|twist|bow|belly|lumps?|voids?|bubbles?|streaks?|waves?|ripples?|ridges?|lip|odor|draft|marks?)$/.test(
        chunks[k]!.word,
      ) || /^(?:in|on|behind|by|under|at)$/.test(chunks[k + 1]?.word ?? '')
    );
  return (
    /^(?:in|on|behind|by|under|at)$/.test(chunks[k + 1]?.word ?? '') &&
    /\b(?:that|a|some|big|is|is big)\b/.test(before) &&
    /^(?:stains?|holes?|spots?|marks?|dents?|humps?|bumps?|bulges?|rocks?)$/.test(chunks[k]!.word)
  );
}

/** "Leak test", "crack filler", "short list": the word is part of a name or a deed. */
const isDeedNoun = (chunks: readonly Chunk[], k: number) =>
  /^(weekend|test|tests|tested|filler|isolation|repair|detector|kit)$/.test(chunks[k + 1]?.word ?? '') ||
  // "Dead plumb", "flat dead level": very.
  (chunks[k]!.word === 'dead' &&
    /^(?:plumb|level|flat|square|on|nuts|center|straight|even)$/.test(chunks[k + 1]?.word ?? ''));
