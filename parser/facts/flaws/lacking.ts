import { type Chunk, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { meantAt } from '../naming/meant.ts';
import { isPerson, nounPhraseFrom, phrase, type Talk, thingIn } from '../talk.ts';
import { type Flaw, isNegativeBefore, subjectWords, thingOf } from './flaw.ts';

const NOT = /^(?:won't|wont|wouldn't|can't|cannot|cant|couldn't|doesn't|doesnt|don't|dont|didn't|didnt|never|not|no)$/;
/** Verbs that say nothing of a thing when denied: "it doesn't matter". */
const NO_REFUSAL =
  /^(?:be|matter|need|have|want|cost|include|count|apply|mind|hurt|look|get|know|think|care|like|leak|drip|budge|say|require|crack|hurry|change|worry|do|seem|mean|bother)$/;
/** Without a verb of its own, or in a first language that denies by "no": these alone are refusals. */
const REFUSES =
  /^(?:close|latch|lock|open|drain|reset|hold|fit|line|turn|shut|sit|seat|work|start|stay|stick|match|reach|light|flush|fire|move|come|spin|slide|catch|clear|meet|swing|cool|heat|stop|adhere|bond|pass|charge|connect|ring|respond)$/;

/** "The door won't latch", "holes don't line up": the thing refuses. A person's "don't" is an order. */
export function refusal(talk: Talk, frame: Frame, at: number): Flaw | null {
  const { chunks, predicate } = frame;
  const k = chunks.findIndex((c, i) => NOT.test(c.word) && verbBehind(chunks, i) > 0);
  const said = chunks.map((c) => c.word).join(' ');
  if (k < 0 || predicate === 'imperative' || /\b(?:until|till|til|before|yet|anymore|any more)\b/.test(said))
    return null;
  if (isPerson(frame.subject) || /^(?:i|we|you|he|she|they|nobody|somebody)\b/.test(said)) return null;
  const verb = chunks[verbBehind(chunks, k)]!;
  const lemma = verb.verb?.lemma ?? verb.word;
  const bare = /^(?:no|not|never)$/.test(chunks[k]!.word);
  if (
    bare
      ? !REFUSES.test(lemma) || chunks.some((c) => c.time) || /^(?:past|modal|owed)$/.test(predicate)
      : NO_REFUSAL.test(lemma)
  )
    return null;
  // "Didn't pull the permit", without who: the speaker's own.
  if (/^didn/.test(chunks[k]!.word) && k === 0) return null;
  const thing = thingOf(talk, frame, at);
  if (!thing.length) return null;
  return {
    thing,
    defect: chunks
      .slice(k, verbBehind(chunks, k) + 2)
      .map((c) => c.word)
      .join(' '),
    span: { start: frame.start, end: frame.end },
    rule: 'problem/refuses',
    confidence: 0.8,
  };
}

/** The verb that "won't" or "not" denies, at most three words on; 0 where there is none. */
function verbBehind(chunks: readonly Chunk[], k: number): number {
  for (let i = k + 1; i <= k + 3 && i < chunks.length; i++) {
    const c = chunks[i]!;
    if (c.verb?.forms.has('base')) return i;
    if (!/^(?:even|ever|really|quite|want|to|fully|all|always)$/.test(c.word)) return 0;
  }
  return 0;
}

const OTHERS = /^(?:they|he|she|nobody|somebody|someone|whoever|no)$/;
const SAYS_ONLY =
  /^(?:say|know|tell|call|show|come|want|answer|care|like|think|see|ask|mind|get|have|need|be|do|go|pay|charge|notice)$/;

const STRUCK =
  /^(?:drill|cut|notch|nail|screw|hit|nick|bury|cover|bust|smash|back|run|bore|saw|paint|drywall|tile|leave|step|spill|drip|track|scrape|gouge|plaster|cover)$/;

/** "The plumber drilled right through the beam", "somebody painted over the vent", "tile guy left thinset all over the tub": harm by others. */
export function harmedBy(frame: Frame): Flaw | null {
  const { chunks, subject, verbAt, lemma } = frame;
  const head = subject.find((c) => c.kind !== 'mark')?.word ?? '';
  const other = /^(?:they|somebody|someone|whoever|some)$/.test(head) || subject.some((c) => c.term?.kind === 'role');
  if (!other || frame.predicate !== 'past' || !STRUCK.test(lemma ?? '') || frame.negative) return null;
  const how = chunks.findIndex(
    (c, i) => i > verbAt && i <= verbAt + 5 && /^(?:through|over|up|into|in|all|behind)$/.test(c.word),
  );
  if (
    how < 0 ||
    (/^(?:up|in)$/.test(chunks[how]!.word) && !/^(?:cover|step)$/.test(lemma!)) ||
    (chunks[how]!.word === 'all' && chunks[how + 1]?.word !== 'over')
  )
    return null;
  const thing = thingIn(chunks.slice(how + 1));
  if (!thing.length) return null;
  return {
    thing,
    defect: `${chunks[verbAt]!.word} ${chunks[how]!.word}`,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/harmed-by',
    confidence: 0.65,
  };
}

/** "They put the return right where the shelf goes": in the way of something else. */
export function inTheWay(frame: Frame): Flaw | null {
  const k = frame.chunks.findIndex((c, i) => c.word === 'right' && frame.chunks[i + 1]?.word === 'where');
  const thing =
    k < 1 ? [] : thingIn(frame.verbAt >= 0 && isPerson(frame.subject) ? frame.rest : frame.chunks.slice(0, k));
  if (!thing.length || frame.predicate === 'imperative') return null;
  return {
    thing,
    defect: 'in the way',
    span: { start: frame.start, end: frame.end },
    rule: 'problem/in-the-way',
    confidence: 0.6,
  };
}

/** "They never flashed the window", "nobody caulked the tub", "framer forgot the blocking": others left it undone. */
export function leftUndone(frame: Frame): Flaw | null {
  const { chunks, subject, verbAt } = frame;
  const head = subject.find((c) => c.kind !== 'mark')?.word ?? '';
  const other = OTHERS.test(head) || subject.some((c) => c.term?.kind === 'role');
  if (!other || verbAt < 0) return null;
  const forgot = chunks.findIndex((c) => /^(?:forgot|forgets|missed|skipped|omitted)$/.test(c.word));
  const undone =
    (/^nobody$/.test(head) && frame.predicate === 'past') ||
    chunks.slice(0, verbAt + 1).some((c) => /^(?:never|didn't|didnt)$/.test(c.word));
  if (forgot < 0 && !(undone && frame.lemma && !SAYS_ONLY.test(frame.lemma))) return null;
  if (/\b(?:until|till|til|before|yet|should|will|can|must)\b/.test(chunks.map((c) => c.word).join(' '))) return null;
  const rest = chunks.slice((forgot >= 0 ? forgot : verbAt) + 1);
  const thing = thingIn(rest);
  if (!thing.length) return null;
  return {
    thing,
    defect: forgot >= 0 ? 'missing' : `not ${chunks[verbAt]!.word}`,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/left-undone',
    confidence: 0.7,
  };
}

/** "No power at the outlet", "there's no blocking", "missing a screw": but "no leaks" is good news. */
export function absence(talk: Talk, frame: Frame, at: number): Flaw | null {
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
  // "There's no bond on the gas line": said outright, a word outside the trade will do.
  const outright =
    noun.length > 0 &&
    /^(?:there's|there|is|has|have|got|with|w)$/.test(chunks[k - 1]?.word ?? '') &&
    !isPerson(frame.subject);
  if (
    !outright &&
    !noun.some(isNounTerm) &&
    !/^(power|water|heat|gas|blocking|ground|vent|flow|pressure|insulation|flashing|backing|clearance|access|signal|hot|cold|light|seal|slope|air)$/.test(
      what.word,
    )
  )
    return null;
  const given =
    frame.predicate === 'copula' ||
    frame.use === 'have' ||
    frame.predicate === 'none' ||
    /^(?:get|find)$/.test(frame.lemma ?? '');
  if (!given || (isPerson(frame.subject) && noun.some((c) => c.term?.kind === 'material'))) return null;
  const place = chunks.slice(k + 1 + noun.length);
  const pointed = /^(?:it|them|that|there)$/.test(place.at(-1)?.word ?? '') ? meantAt(talk, at) : [];
  const before = frame.predicate === 'none' ? subjectWords(chunks.slice(0, k)) : [];
  const subject = before.some(isNounTerm) ? before : thingIn(frame.subject);
  return {
    thing:
      subject.length && !isPerson(frame.subject)
        ? [...subject, ...thingIn(place)]
        : [...(pointed.length ? pointed : thingIn(place)), ...noun],
    defect: `no ${phrase(noun)}`,
    span: { start: frame.start, end: frame.end },
    rule: 'problem/absent',
    confidence: 0.75,
  };
}
