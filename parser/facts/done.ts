import type { Done, Problem } from '../types.ts';
import { type Chunk, isDeterminer, isNounTerm } from './chunks.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { goesByName } from './peopleNamed.ts';
import type { Talk } from './talk.ts';
import { doneTask } from './workDone.ts';

/** Work that the note says is finished. */
export function readDone(talk: Talk, problems: readonly Problem[]): Done[] {
  const out: Done[] = [];
  talk.frames.forEach((frame, at) => {
    const task = doneTask(talk, frame, at);
    if (!task?.trim().includes(' ')) return;
    // "The flange is cracked", "runs left on the sills": the flaw has said it.
    if (
      problems.some(
        (p) =>
          (p.start <= frame.start && frame.end <= p.end && p.state === 'open' && !PAST_WORK.test(frame.lemma ?? '')) ||
          (p.start === frame.start &&
            (frame.predicate === 'copula' ||
              (frame.subject.length > 0 && !/^(?:i|we)\b/.test(frame.subject[0]!.word)))),
      )
    )
      return;
    // "... so I cut it out" is how the flaw was put right, told with it.
    if (
      problems.some((p) => p.state === 'fixed' && p.start < frame.start && frame.start < p.end) &&
      pointsAtFlaw(frame)
    )
      return;
    const before = out.at(-1);
    if (before && goesOn(talk, frame, at, before)) {
      before.end = frame.end;
      before.quote = talk.text.slice(before.start, frame.end);
      return;
    }
    out.push({ ...base(talk, frame, `done/${frame.predicate}`), kind: 'done', task, who: roleIn(frame.subject) });
  });
  return out;
}

/** "The ceiling's hung, taped": more of the same work on the same thing, told without naming it. */
function goesOn(talk: Talk, frame: Frame, at: number, before: Done): boolean {
  const first = talk.frames.findIndex((f) => f.start === before.start);
  return (
    first >= 0 &&
    frame.predicate === 'past' &&
    frame.verbAt === 0 &&
    /^(?:and|comma)$/.test(frame.joinedBy) &&
    frame.sentence === talk.frames[first]!.sentence &&
    talk.frames.slice(first + 1, at).every((f) => f.predicate === 'none' || f.end <= before.end) &&
    (!frame.rest.some((c) => isNounTerm(c) || isDeterminer(c) || c.kind === 'quantity') ||
      /^(?:to|with|from|against|around|at|along)$/.test(frame.rest[0]!.word))
  );
}

/** Nothing of its own is named: "taped it", "retested", "pulled it straight". */
const pointsAtFlaw = (frame: Frame) =>
  frame.predicate === 'past' &&
  !frame.rest.some((c) => isNounTerm(c) && c.term!.kind !== 'area') &&
  !/\bnew\b/.test(frame.rest.map((c) => c.word).join(' '));

const PAST_WORK =
  /^(replace|swap|patch|tape|shim|adjust|tighten|torque|plane|pull|install|hang|set|lay|cut|paint|prime|caulk|grout|tile|fix|repair|clear|straighten)$/;

export function roleIn(chunks: readonly Chunk[]): string | null {
  const person = chunks.find((c) => c.term?.kind === 'role');
  if (!person) return null;
  // Somebody known by nothing but a name goes by it as written.
  return goesByName(person.term!) ? person.term!.name : person.word.replace(/'s$/, '');
}
