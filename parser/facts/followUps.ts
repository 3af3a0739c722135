import type { Done, FollowUp, Problem } from '../types.ts';
import { type Chunk, isGoods, isModal, isNounTerm } from './chunks.ts';
import type { Frame } from './frames.ts';
import { isSettled } from './goods/stated.ts';
import { isHaveDo } from './imperative.ts';
import { base } from './make.ts';
import { askedPlan } from './plans/asked.ts';
import { barePlan, presentPlan } from './plans/coming.ts';
import { datedPlan } from './plans/dated.ts';
import { conditionOf, trailingDate, waitBefore, waitText } from './plans/dates.ts';
import { haveDo, heldBack, letPlan } from './plans/orders.ts';
import { owedPlan } from './plans/owed.ts';
import { isQuestion } from './plans/questions.ts';
import { isDenied, standingOrder } from './plans/standing.ts';
import {
  BUYS,
  cutAtTime,
  IDLE,
  isPurchase,
  type Plan,
  personIn,
  resolve,
  type Told,
  verbPhrase,
} from './plans/told.ts';
import { visitPlan } from './plans/visits.ts';
import { isPerson, phrase, type Talk } from './talk.ts';

/** What still has to be done, asked or checked, and by whom; `days/` tells when. */
export function readFollowUps(talk: Talk, done: readonly Done[], problems: readonly Problem[]): FollowUp[] {
  const out: FollowUp[] = [];
  talk.frames.forEach((frame, at) => {
    const told = { ...talk, problems, done };
    const standing = standingOrder(told, frame, at);
    const plan = standing ?? planOf(told, frame, at) ?? askedPlan(told, frame, at) ?? datedPlan(told, frame, at);
    if (!plan || (!standing && isDenied(frame)) || isQuestion(talk, frame)) return;
    const wait = waitBefore(talk, frame, at);
    const start = wait ? Math.min(wait.start, frame.start) : frame.start;
    const where = talk.frames[at + 1];
    const both =
      where && /^both (?:rooms|sides|areas)$/.test(where.chunks.map((c) => c.word).join(' ')) ? where.end : frame.end;
    const end = Math.max(trailingDate(talk, at)?.end ?? frame.end, both);
    out.push({
      ...base(talk, frame, `follow-up/${frame.predicate}`, { start, end: Math.max(frame.end, end) }, plan.confidence),
      kind: 'followUp',
      task: plan.task,
      who: plan.who,
      due: null,
      notBefore: null,
      waitingFor: wait ? waitText(wait) : null,
      condition: conditionOf(frame),
    });
  });
  return merged(talk, out);
}

/** "Owner wants a gate at the top", "she'd like three lights": goods that somebody else wants put in. */
function wishedFor(frame: Frame): Chunk[] {
  const { chunks } = frame;
  const wish = chunks.findIndex((c) => /^(?:wants?|wanted|like)$/.test(c.word));
  if (wish < 1 || wish > 4 || frame.negative) return [];
  const asks = chunks.slice(0, wish);
  const another =
    isPerson(asks) &&
    !/^(?:i|we|you|i'd|we'd|i'm)$/.test(chunks[0]!.word) &&
    !/^(?:said|says|who)$/.test(asks.at(-1)!.word);
  if (!another || (chunks[wish]!.word === 'like' && !/(?:'d|would)$/.test(asks.at(-1)!.word))) return [];
  const thing = chunks.slice(wish + 1);
  const counted = thing[0]?.quantity || /^(?:a|an|another|some|new)$/.test(thing[0]?.word ?? '');
  return counted && thing.slice(0, 6).some((c) => isNounTerm(c) && c.term!.kind !== 'area') ? thing : [];
}

function planOf(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks, predicate, lemma } = frame;
  const said = chunks.map((c) => c.word).join(' ');
  if (
    /^(?:let's see|let me see|let me|you know|i mean|i guess|take it easy|have a|hope|call (?:me|us) back|never mind|do not worry|don't worry)\b/.test(
      said,
    )
  )
    return null;
  // "Let's do six sheets": goods to buy, and no work.
  if (isSettled(said) && chunks.some((c, k) => isGoods(c) && chunks.slice(0, k).some((q) => q.quantity))) return null;
  // Greetings passed on.
  if (/\b(?:happy birthday|congrats|congratulations|hello|hi|thanks|regards)\b/.test(said)) return null;
  const visit = visitPlan(talk, frame, at);
  if (visit) return visit;
  if (predicate === 'imperative') {
    if (/^(don't|dont|do)$/.test(chunks[frame.verbAt]!.word)) return heldBack(talk, frame, at);
    if (chunks[frame.verbAt]!.word === 'let') return letPlan(talk, frame, at);
    if (isHaveDo(chunks, frame.verbAt)) return haveDo(talk, frame, at);
    // "Open: the hall light": a heading.
    if (chunks.length === 1 && talk.text[frame.end] === ':') return null;
    if (BUYS.test(lemma ?? '') && isPurchase(frame)) return null;
    if (lemma === 'remind') {
      const to = chunks.findIndex((c, k) => c.word === 'to' && chunks[k + 1]?.verb);
      return to < 0
        ? null
        : {
            task: `${chunks[to + 1]!.verb!.lemma} ${phrase(cutAtTime(resolve(talk, chunks.slice(to + 2), at)))}`.trim(),
            who: null,
            confidence: 0.8,
          };
    }
    if (lemma === 'order' && frame.rest[0]?.word === 'number') return null;
    if (lemma === 'hold' && frame.rest.length <= 1) return null;
    // "Call it two sheets": an estimate.
    if (lemma === 'call' && /^(?:it|that)$/.test(frame.rest[0]?.word ?? '') && frame.rest.some((c) => c.quantity))
      return null;
    if (lemma === 'make' && frame.rest.some((c) => c.quantity)) return null;
    if (lemma === 'keep' || lemma === 'leave')
      return frame.chunks.some((c) => c.time)
        ? { task: verbPhrase(talk, frame, at), who: null, confidence: 0.55 }
        : null;
    if (lemma === 'make' && frame.rest[0]?.word === 'sure')
      return { task: `make sure ${phrase(frame.rest.slice(1))}`, who: null, confidence: 0.75 };
    if (
      /^(let|know|think|say|hear|see|guess|mind|like|love|trust|figure|wait|give|need|want|be|go|take|hold|thank|sleep|eat|drive)$/.test(
        lemma ?? '',
      ) &&
      !/^(take (?:it|that|them|those|the|out|off|down|back)|go (?:back|over|get)|give .* (?:call|ring)|hold off)/.test(
        said,
      )
    )
      return null;
    return { task: verbPhrase(talk, frame, at), who: null, confidence: 0.85 };
  }
  const wished = wishedFor(frame);
  if (wished.length) return { task: `install ${phrase(cutAtTime(wished))}`, who: null, confidence: 0.6 };
  if (predicate === 'owed') {
    if (/\b(?:don't|doesn't|didn't|dont|no) (?:need|have|want)\b/.test(said)) return null;
    return owedPlan(talk, frame, at);
  }
  if (predicate === 'modal') {
    if (isModal(chunks[frame.verbAt])) return null;
    if (
      frame.negative ||
      (/\b(?:could|can|would|should've|do|does|did|may|might)\b/.test(said) && !/\bshould\b/.test(said))
    ) {
      if (
        /\bthen (?:i|we) can\b|^(?:i|we|you) can\b/.test(said) &&
        lemma &&
        !IDLE.has(lemma) &&
        (waitBefore(talk, frame, at) || isWhen(talk.frames[at - 1], frame))
      )
        return { task: verbPhrase(talk, frame, at), who: null, confidence: 0.65 };
      if (
        !frame.negative &&
        lemma &&
        personIn(frame.subject) &&
        chunks.some((c) => c.time && !c.time.past) &&
        (!IDLE.has(lemma) || lemma === 'start')
      )
        return { task: verbPhrase(talk, frame, at), who: personIn(frame.subject), confidence: 0.65 };
      const held =
        frame.negative &&
        frame.subject.length > 0 &&
        !isPerson(frame.subject) &&
        chunks.some((c) => c.time?.relation === 'notBefore');
      if (held)
        return {
          task: /^(?:go|happen|start)$/.test(lemma ?? '')
            ? `do ${phrase(frame.subject)}`
            : `${lemma} ${phrase(frame.subject)}`,
          who: null,
          confidence: 0.65,
          held: true,
        };
      if (!frame.negative && frame.openers.includes('then') && /\bcan\b/.test(said) && lemma && !IDLE.has(lemma))
        return { task: verbPhrase(talk, frame, at), who: null, confidence: 0.65, held: true };
      return null;
    }
    if (
      !lemma ||
      !chunks[frame.verbAt]?.verb ||
      (IDLE.has(lemma) && !/^(go|come|take)$/.test(lemma)) ||
      (BUYS.test(lemma) && isPurchase(frame) && !(lemma === 'bring' && chunks.some((c) => c.time)))
    )
      return null;
    if (
      frame.subject.length &&
      !isPerson(frame.subject) &&
      !/\b(?:gonna|going to) (?:be|get|need)\b|\bshould be\b/.test(said)
    )
      return null;
    return { task: verbPhrase(talk, frame, at), who: personIn(frame.subject), confidence: 0.75 };
  }
  if (
    predicate === 'past' &&
    lemma === 'ask' &&
    frame.rest[0]?.word === 'for' &&
    frame.rest.some(isGoods) &&
    isPerson(frame.subject) &&
    !/^(?:i|we)$/.test(chunks[0]!.word)
  )
    return { task: `install ${phrase(cutAtTime(frame.rest.slice(1)))}`, who: null, confidence: 0.6 };
  if (frame.use === 'say' && personIn(frame.subject)) {
    const will = chunks.findIndex(
      (c, k) => k > frame.verbAt && (/'(?:ll|d)$/.test(c.word) || /^(?:will|gonna|can)$/.test(c.word)),
    );
    const doing = will < 0 ? -1 : chunks.findIndex((c, k) => k > will && c.verb);
    const verb = chunks[doing]?.verb;
    return verb && !IDLE.has(verb.lemma)
      ? {
          task: `${verb.lemma} ${phrase(cutAtTime(resolve(talk, chunks.slice(doing + 1), at)))}`.trim(),
          who: personIn(frame.subject),
          confidence: 0.7,
        }
      : null;
  }
  const getting = predicate === 'past' && chunks[frame.verbAt]?.word === 'getting' && personIn(frame.subject);
  if (getting && chunks.some((c) => c.time && !c.time.past))
    return { task: `get ${phrase(cutAtTime(frame.rest))}`, who: getting, confidence: 0.7 };
  if (predicate === 'present') return presentPlan(talk, frame, at, said);
  if (predicate === 'none' || predicate === 'copula') return barePlan(talk, frame, at, said);
  return null;
}

/** "When the glue dries | we can sand". */
const isWhen = (before: Frame | undefined, frame: Frame) =>
  before !== undefined &&
  before.sentence === frame.sentence &&
  /^(?:when|once|after)$/.test(before.chunks[0]!.word) &&
  !frame.negative;

const isAhead = (c: Chunk) => c.time !== undefined && !c.time.past;

/** One job told twice in a note is one; "do that tomorrow" only dates the job before it. */
function merged(talk: Talk, plans: readonly FollowUp[]): FollowUp[] {
  const out: FollowUp[] = [];
  for (const plan of plans) {
    if (/^do(?: (?:that|it|this))?$/.test(plan.task)) continue;
    if (!out.some((p) => p.task === plan.task && p.area === plan.area)) out.push(plan);
  }
  return out.filter(
    (p) =>
      p.task.includes(' ') || (p.task && talk.chunks.some((c) => isAhead(c) && p.start <= c.start && c.end <= p.end)),
  );
}
