import type { TimeMention } from '../../types.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

/** What is waited for, as said, with the hour where the wait ends within the day: "three hours, until 11:00". */
export const waitText = ({ quote, hours, clock }: TimeMention): string =>
  hours !== undefined && clock !== undefined ? `${quote}, until ${clock}` : quote;

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

/** A clause behind the plan that only tells its day: "do that tomorrow". */
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

export function conditionOf(frame: Frame): string | null {
  const k = frame.chunks.findIndex((c) => c.word === 'if' || c.word === 'unless');
  return k < 0
    ? null
    : frame.chunks
        .slice(k)
        .map((c) => c.word)
        .join(' ');
}
