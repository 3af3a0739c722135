import type { TimeMention } from '../../types.ts';
import { isDeterminer } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';
import type { Plan } from './told.ts';

/** The wait that this step comes after: "let it cure 24 hours, then grout", "has to dry overnight before we sand". */
export function waitBefore(talk: Talk, frame: Frame, at: number): TimeMention | null {
  const own = frame.chunks.find((c) => c.time?.hours !== undefined || c.time?.relation === 'notBefore');
  if (own) return own.time!;
  if (
    !frame.openers.includes('then') &&
    !frame.openers.includes('before') &&
    !/^(and|word|comma|run-on)$/.test(frame.joinedBy)
  )
    return null;
  for (let k = at - 1; k >= 0 && k >= at - 2; k--) {
    const earlier = talk.frames[k]!;
    const time = earlier.chunks.find((c) => c.time?.hours !== undefined || c.time?.relation === 'notBefore');
    if (time) return isWaitFrame(earlier) ? time.time! : null;
    if (earlier.predicate === 'imperative' && earlier.chunks[earlier.verbAt]?.word !== 'let') return null;
  }
  const next = talk.frames[at + 1];
  const after = next?.chunks.find((c) => c.time?.hours !== undefined);
  return next &&
    after &&
    isWaitFrame(next) &&
    (next.joinedBy === 'word' || next.joinedBy === 'run-on') &&
    next.openers.some((o) => o === 'but' || o === 'once')
    ? after.time!
    : null;
}

const isWaitFrame = (frame: Frame) =>
  /\b(let|cure|cures|dry|dries|set|sit|sits|wait|give|leave|rest|hour|hours|hrs|overnight|days?|keep)\b/.test(
    frame.chunks.map((c) => c.word).join(' '),
  );

export function datesOf(
  talk: Talk,
  frame: Frame,
  at: number,
  plan: Plan,
  wait: TimeMention | null,
): { due: string | null; notBefore: string | null } {
  const own = frame.chunks.flatMap((c) => (c.time && !c.time.past ? [c.time] : []));
  const lead = leadingDate(talk, at);
  const trail = trailingDate(talk, at);
  let due: string | null = null;
  let notBefore: string | null = wait ? wait.date : null;
  for (const time of [...own, ...(trail ? [trail] : []), ...(lead ? [lead] : [])]) {
    if (plan.held || time.relation === 'notBefore' || time.relation === 'after' || time.hours !== undefined)
      notBefore ??= time.date;
    else due ??= time.to ?? time.date;
  }
  if (
    due &&
    /^(?:no|not|never) (?:before|sooner|earlier)$/.test(talk.frames[at + 1]?.chunks.map((c) => c.word).join(' ') ?? '')
  )
    notBefore ??= due;
  if (!due && plan.who) due = arrivalAfter(talk, at);
  return { due, notBefore };
}

/** "The plumber's gotta change it, he said he can be here tuesday": his day is the job's. */
function arrivalAfter(talk: Talk, at: number): string | null {
  for (const frame of talk.frames.slice(at + 1, at + 3)) {
    const time = frame.chunks.find((c) => c.time && !c.time.past)?.time;
    if (
      time &&
      /^(?:he|she|they)\b|\b(?:be here|be by|come|coming|comes|be out)\b/.test(
        frame.chunks.map((c) => c.word).join(' '),
      )
    )
      return time.date;
  }
  return null;
}

/** A bare date clause before ("friday, call the yard") or after ("do that tomorrow"). */
export function trailingDate(talk: Talk, at: number): TimeMention | null {
  const next = talk.frames[at + 1];
  if (!next) return null;
  const words = next.chunks.map((c) => c.word).join(' ');
  const time = next.chunks.find((c) => c.time && !c.time.past)?.time;
  if (!time) return null;
  const only = next.chunks.every(
    (c) => c.time || c.kind === 'mark' || /^(by|on|before|first|thing|sometime|that|do|it|so)$/.test(c.word),
  );
  return (only && next.joinedBy !== 'stop') || /^do (?:that|it|this)\b/.test(words) ? time : null;
}

function leadingDate(talk: Talk, at: number): TimeMention | null {
  const before = talk.frames[at - 1];
  if (!before) return null;
  const frame = talk.frames[at]!;
  const dated = before.chunks.find((c) => c.time && !c.time.past && c.time.hours === undefined)?.time;
  // "Pick one up tomorrow and try it", "he can be here tuesday and then I can finish": the day holds on.
  if (
    dated &&
    before.sentence === frame.sentence &&
    ((frame.joinedBy === 'and' && before.predicate === 'imperative') || frame.openers.includes('then'))
  )
    return dated;
  return before.chunks.every((c) => c.time || c.kind === 'mark' || isDeterminer(c) || /^(on|for|come)$/.test(c.word)) &&
    before.joinedBy !== 'word'
    ? (before.chunks.find((c) => c.time && !c.time.past)?.time ?? null)
    : null;
}

export function conditionOf(frame: Frame): string | null {
  const k = frame.chunks.findIndex((c) => c.word === 'if' || c.word === 'unless');
  return k < 0
    ? null
    : frame.chunks
        .slice(k)
        .map((c) => c.word)
        .join(' ');
}
