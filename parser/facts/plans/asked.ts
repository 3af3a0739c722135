import { type Chunk, isCopula, isGoods, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, phrase } from '../talk.ts';
import { isSmall } from '../words.ts';
import { needsPlan } from './owed.ts';
import { BUYS, cutAtTime, IDLE, meant, type Plan, personIn, resolve, type Told } from './told.ts';

/** "Want to double check", "good to backfill", "left to do": what stands before "to" and a verb when work is meant. */
const BEFORE_TO =
  /^(?:need|needs|want|wants|have|has|got|going|like|love|ought|remember|sure|plan|planning|aim|aiming|trying|hoping|hope|ready|good|left|remind|forget|back|coming|comes|by|over|free|able|still|due|set|scheduled|set)$/;
const BARE = /^(?:gotta|gonna|wanna|must|should|will|(?:i|we|he|she|they)'(?:ll|d))$/;
const REQUEST = /^(?:could|can|would|will) (?:you|ya|u|someone|somebody|you guys)\b/;
/** Told of the past or of no one's work. */
const OVER =
  /\b(?:had to|wanted to|used to|tried to|was (?:gonna|going to)|were (?:gonna|going to)|supposed to be|didn't|couldn't|no need|don't (?:need|have|want)|nothing to|need to know|have to say|would have|should have|should've)\b/;

/**
 * Work asked for or meant, by the words that lead to its verb, whatever the clause's grammar: "I want to double check
 * the slope", "could you look at the latch", "don't forget to shut the water off", "be sure and lock it".
 */
export function askedPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const said = chunks.map((c) => c.word).join(' ');
  if (OVER.test(said) || (frame.negative && !/^(?:don't|dont|do not) forget\b/.test(said))) return null;
  if (/^(?:if|when|once|unless)\b/.test(said)) return null;
  return (
    goesBack(talk, frame, at, said) ??
    haveSomebody(talk, frame, at) ??
    getDone(talk, frame, at) ??
    passive(talk, frame, at) ??
    ledTo(talk, frame, at, said) ??
    afterWait(talk, frame, at) ??
    leftOver(talk, frame, at) ??
    (frame.predicate === 'modal' && frame.lemma === 'need' ? needsPlan(talk, frame, at) : null)
  );
}

function ledTo(talk: Told, frame: Frame, at: number, said: string): Plan | null {
  const { chunks } = frame;
  const at0 = leadTo(chunks, said);
  // "The water would have to run uphill", "this is going to voice to text": what a thing does is nobody's work.
  if (at0 < 0 || (frame.subject.length > 0 && !isPerson(frame.subject) && /^(?:owed|modal)$/.test(frame.predicate)))
    return null;
  const who = personIn(chunks.slice(0, at0));
  const other = who !== null || chunks.slice(0, at0).some((c) => /^(?:he|she|they)(?:'|$)/.test(c.word));
  const promised = other && chunks.some((c) => c.time && !c.time.past);
  let verbAt = at0;
  while (AUXILIARY.test(chunks[verbAt]?.word ?? '') && isDoing(chunks, verbAt + 1)) verbAt++;
  const verb = chunks[verbAt];
  if (!verb || !isDoing(chunks, verbAt)) return null;
  const lemma = verb.verb?.lemma ?? verb.word;
  const rest = chunks.slice(verbAt + 1);
  if (IDLE.has(lemma) && !(promised && /^(?:tell|let|give|get|send|know)$/.test(lemma))) return null;
  if (BUYS.test(lemma) && !other && rest.some((c) => isGoods(c) || c.quantity)) return null;
  const object = phrase(cutAtTime(resolve(talk, rest, at)));
  const subject = frame.subject.some(isNounTerm) && !isPerson(frame.subject) ? phrase(frame.subject) : '';
  const task = `${lemma} ${object || subject || meant(talk, at)}`.trim();
  return task.includes(' ') ? { task, who, confidence: 0.65 } : null;
}

/** "That piece will have to be replaced", "the sill should get painted": the thing stands first. */
function passive(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks, subject } = frame;
  const be = chunks.findIndex(
    (c, k) =>
      k > 0 &&
      /^(?:be|get)$/.test(c.word) &&
      /^(?:to|will|should|must|gonna|gotta|it'll|they'll)$/.test(chunks[k - 1]!.word),
  );
  const done =
    be < 0 ? undefined : chunks.slice(be + 1, be + 3).find((c) => c.verb?.forms.has('participle') && !isNounTerm(c));
  if (!done?.verb || isPerson(subject) || IDLE.has(done.verb.lemma)) return null;
  const vague = isPointer(subject) || subject.some((c) => c.word === 'piece');
  const thing = (vague && meant(talk, at)) || (isPointer(subject) ? '' : phrase(subject));
  return thing ? { task: `${done.verb.lemma} ${thing}`, who: null, confidence: 0.7 } : null;
}

/** "Swing by and look", "go ahead and close it": the verb that matters comes after. */
const AUXILIARY = /^(?:go|come|swing|run|just|also|and|please|ahead|try|first|probably|by|back|over|double)$/;

/** "They're going back", "7 left going back to the yard", "3 gallons to take back": goods on their way out. */
function goesBack(talk: Told, frame: Frame, at: number, said: string): Plan | null {
  const { chunks, subject } = frame;
  const who = subject.some((c) => c.term?.kind === 'role' || /^(?:i|we|he|she)\b/.test(c.word));
  if (
    /\b(?:going|goes|go|sending (?:it|them|that)) back\b/.test(said) &&
    !who &&
    !/\b(?:went|gone) back\b/.test(said)
  ) {
    const named = isPointer(subject) ? meant(talk, at) : phrase(subject);
    return named ? { task: `send back ${named}`, who: null, confidence: 0.7 } : null;
  }
  const to = chunks.findIndex(
    (c, k) =>
      c.word === 'to' &&
      /^(?:take|bring|send|return|go)$/.test(chunks[k + 1]?.word ?? '') &&
      (chunks[k + 2]?.word === 'back' || chunks[k + 1]?.word === 'return'),
  );
  const goods = to > 0 ? chunks.slice(0, to).filter((c) => isNounTerm(c) || c.term?.kind === 'finish') : [];
  return goods.length ? { task: `take back ${phrase(goods)}`, who: null, confidence: 0.7 } : null;
}

/** "Gonna have the plumber swap both", "need him to look at it": whose work it is. */
function haveSomebody(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  if (frame.predicate === 'past') return null;
  const have = chunks.findIndex((c) => /^(?:have|get|need|want)$/.test(c.word));
  const who =
    have < 0
      ? -1
      : chunks.findIndex(
          (c, k) =>
            k > have &&
            k <= have + 3 &&
            (c.term?.kind === 'role' || /^(?:him|her|them|somebody|someone)$/.test(c.word)),
        );
  const verbAt =
    who < 0
      ? -1
      : chunks.findIndex(
          (c, k) => k > who && k <= who + 3 && c.verb?.forms.has('base') && !/^(?:come|go)$/.test(c.word),
        );
  const verb = chunks[verbAt]?.verb;
  // "I want the fabricator back out here before friday".
  if (!verb && who > 0 && personIn([chunks[who]!]) && /^(?:back|out|here|in|over)$/.test(chunks[who + 1]?.word ?? ''))
    return { task: `get ${personIn([chunks[who]!])} back`, who: null, confidence: 0.65 };
  if (!verb || IDLE.has(verb.lemma)) return null;
  const object = phrase(cutAtTime(resolve(talk, chunks.slice(verbAt + 1), at)));
  return { task: `${verb.lemma} ${object || meant(talk, at)}`.trim(), who: personIn([chunks[who]!]), confidence: 0.7 };
}

/** "Get the sub panel in by the weekend", "have it fixed by friday": not fetched, but brought to an end. */
function getDone(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  if (frame.predicate === 'past' || frame.predicate === 'present') return null;
  const get = chunks.findIndex((c) => /^(?:get|have)$/.test(c.word));
  const rest = get < 0 ? [] : cutAtTime(chunks.slice(get + 1));
  const part = rest.findIndex(
    (c, k) =>
      k > 0 &&
      ((c.verb?.forms.has('participle') && c.verb.use === 'work' && !isNounTerm(c)) ||
        (/^(?:in|up|on|down|done|finished|hung|set)$/.test(c.word) && k === rest.length - 1)),
  );
  if (part < 1 || rest[0]!.word === 'to' || rest.slice(0, part).some((c) => c.quantity || c.term?.kind === 'role'))
    return null;
  const end = rest[part]!;
  const lemma = /^(?:done|finished)$/.test(end.word) ? 'finish' : (end.verb?.lemma ?? 'install');
  const thing = phrase(resolve(talk, rest.slice(0, part), at)) || meant(talk, at);
  return thing ? { task: `${lemma} ${thing}`, who: personIn(chunks.slice(0, get)), confidence: 0.65 } : null;
}

/** Where the verb stands that the clause leads up to; -1 where it leads to none. */
function leadTo(chunks: readonly Chunk[], said: string): number {
  if (REQUEST.test(said))
    return chunks.findIndex((c, k) => k > 1 && c.verb?.forms.has('base') && !/^(?:you|guys)$/.test(c.word));
  for (let k = 0; k < chunks.length - 1; k++) {
    const [c, next, before] = [chunks[k]!, chunks[k + 1]!, chunks[k - 1]];
    if (c.word === 'to' && BEFORE_TO.test(before?.word ?? '') && isDoing(chunks, k + 1)) return k + 1;
    if (
      c.word === 'to' &&
      before &&
      (before.term?.kind === 'role' || /^(?:someone|somebody|him|her|them|you)$/.test(before.word)) &&
      /\b(?:need|want|like|get|ask|tell|have)\b/.test(said) &&
      isDoing(chunks, k + 1)
    )
      return k + 1;
    if (BARE.test(c.word) && isDoing(chunks, k + 1) && !IDLE.has(next.verb?.lemma ?? next.word)) return k + 1;
    if (c.word === 'sure' && next.word === 'and' && isDoing(chunks, k + 2)) return k + 2;
  }
  return -1;
}

/** A word that can be done: a verb of the tables, or a plain word in a verb's place. */
function isDoing(chunks: readonly Chunk[], k: number): boolean {
  const c = chunks[k];
  if (!c || isCopula(c) || c.kind === 'quantity' || c.kind === 'time' || c.kind === 'mark') return false;
  if (c.verb?.forms.has('base')) return true;
  return (
    c.kind === 'word' &&
    !isSmall(c.word) &&
    /^[a-z]{3,}$/.test(c.word) &&
    !/(?:ing|ed|ly)$/.test(c.word) &&
    chunks[k + 1] !== undefined
  );
}

/** "It has to sit 24 hours before we caulk": the step that the wait holds back. */
function afterWait(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const wait = chunks.findIndex((c) => c.time?.hours !== undefined || c.time?.relation === 'notBefore');
  const before = chunks.findIndex((c, k) => k > wait && /^(?:before|then|till|until)$/.test(c.word));
  if (wait < 0 || before < 0) return null;
  const verbAt = chunks.findIndex(
    (c, k) =>
      k > before &&
      c.verb !== undefined &&
      (c.verb.forms.has('base') || c.verb.forms.has('ing')) &&
      !IDLE.has(c.verb.lemma),
  );
  if (verbAt < 0) return null;
  const object = phrase(cutAtTime(resolve(talk, chunks.slice(verbAt + 1), at)));
  // "24 hours then 2nd coat"
  const ordinal = chunks[verbAt - 1]?.notQuantity?.kind === 'ordinal' ? phrase([chunks[verbAt - 1]!]) : '';
  if (ordinal) return { task: `${ordinal} ${chunks[verbAt]!.word} ${object}`.trim(), who: null, confidence: 0.65 };
  return { task: `${chunks[verbAt]!.verb!.lemma} ${object || meant(talk, at)}`.trim(), who: null, confidence: 0.65 };
}

/** "Only thing left is caulking the tub", "trim's left in the den", "still the mirror to hang". */
function leftOver(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const said = chunks.map((c) => c.word).join(' ');
  if (!/\b(?:left|remaining|remains)\b/.test(said) || chunks.some((c) => c.quantity && !isPointer([c]))) return null;
  const ing = chunks.findIndex((c, k) => k > 0 && c.verb?.forms.has('ing') && isCopula(chunks[k - 1]));
  if (ing > 0)
    return {
      task: `${chunks[ing]!.verb!.lemma} ${phrase(cutAtTime(resolve(talk, chunks.slice(ing + 1), at))) || meant(talk, at)}`.trim(),
      who: null,
      confidence: 0.65,
    };
  const thing =
    /\bleft to (?:do|go|finish)\b/.test(said) && frame.subject.some(isNounTerm) ? phrase(frame.subject) : '';
  return thing ? { task: `finish ${thing}`, who: null, confidence: 0.6 } : null;
}
