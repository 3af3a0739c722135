import { isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, nounPhraseFrom, phrase, type Talk, thingIn } from '../talk.ts';
import { type Flaw, isNegativeBefore, subjectWords, thingOf } from './flaw.ts';

const REFUSES =
  /\b(?:won't|wont|wouldn't|will not|can't|cannot|cant|couldn't|doesn't|doesnt|does not|don't|dont|didn't|did not|not|never|no)\b (?:even |ever |really |quite |want to )?(close|latch|lock|open|drain|reset|hold|fit|line up|turn|shut|sit|seat|work|start|stay|stick|match|reach|light|flush|fire|budge|move|come|spin|slide|catch|read|clear|meet|swing|cool|heat|kick on|stop|set|cure|adhere|bond|pass|test|charge|connect|ring|respond|power)\b/;

/** "The door won't latch", "holes don't line up": the thing refuses. A person's "don't" is an order. */
export function refusal(talk: Talk, frame: Frame, at: number, said: string): Flaw | null {
  const match = REFUSES.exec(said);
  if (!match || (/^no\b/.test(match[0]) && frame.chunks.some((c) => c.time))) return null;
  if (/^(?:i|we|you|he|she|they|nobody|somebody)\b/.test(said) && isPerson(frame.subject)) return null;
  if (
    /^(?:not|no|never)\b/.test(match[0]) &&
    frame.predicate !== 'none' &&
    frame.predicate !== 'copula' &&
    frame.predicate !== 'present'
  )
    return null;
  if (/\b(budge|leak|drip)\b/.test(match[1]!)) return null;
  if (frame.predicate === 'imperative') return null;
  const thing = thingOf(talk, frame, at);
  if (!thing.length) return null;
  const from = said.slice(match.index).split(' ').slice(0, 5).join(' ');
  return {
    thing,
    defect: from,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/refuses',
    confidence: 0.8,
  };
}

/** "No power at the outlet", "there's no blocking", "missing a screw": but "no leaks" is good news. */
export function absence(frame: Frame): Flaw | null {
  const { chunks } = frame;
  const k = chunks.findIndex((c, i) => c.word === 'no' && chunks[i + 1] !== undefined);
  const missing = chunks.findIndex((c) => /^(missing|lacking|lacks)$/.test(c.word));
  if (missing >= 0 && !isNegativeBefore(chunks, missing)) {
    const after = chunks.slice(missing + 1, nounPhraseFrom(chunks, missing + 1));
    const hasSubject = chunks.slice(0, missing).some(isNounTerm);
    return {
      thing: hasSubject ? subjectWords(chunks.slice(0, missing)) : after,
      defect: after.length && hasSubject ? `missing ${phrase(after)}` : 'missing',
      span: { start: frame.start, end: frame.end },
      rule: 'problem/missing',
      confidence: 0.8,
    };
  }
  if (k < 0 || frame.predicate === 'imperative' || chunks.some((c) => c.time && !c.time.past)) return null;
  const what = chunks[k + 1]!;
  const noun = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1));
  if (
    what.term?.kind === 'defect' ||
    /^(problem|problems|issue|issues|complaints?|need|more|mold|mould|drop|damage|bubbles|sign|movement|touch|rush|worries|big|good|idea|luck|cracks|one|charge|cost|change|changes|structural|thanks)$/.test(
      what.word,
    ) ||
    noun.some((c) => /^(needed|required|problem|issues?)$/.test(c.word)) ||
    chunks.some((c) => c.word === 'needed')
  )
    return null;
  if (
    !noun.some(isNounTerm) &&
    !/^(power|water|heat|gas|blocking|ground|vent|flow|pressure|insulation|flashing|backing|clearance|access|signal|hot|cold|light|seal|slope|air)$/.test(
      what.word,
    )
  )
    return null;
  const given =
    frame.predicate === 'copula' || frame.use === 'have' || frame.predicate === 'none' || frame.lemma === 'get';
  if (!given || (isPerson(frame.subject) && noun.some((c) => c.term?.kind === 'material'))) return null;
  const place = chunks.slice(k + 1 + noun.length);
  const subject = thingIn(frame.subject);
  return {
    thing: subject.length && !isPerson(frame.subject) ? subject : [...thingIn(place), ...noun],
    defect: `no ${phrase(noun)}`,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/absent',
    confidence: 0.75,
  };
}
