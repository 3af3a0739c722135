import type { Problem } from '../types.ts';
import { amiss } from './flaws/amiss.ts';
import { cameAcross } from './flaws/cameAcross.ts';
import { fixIn } from './flaws/fixed.ts';
import type { Flaw } from './flaws/flaw.ts';
import { absence, harmedBy, inTheWay, leftUndone, refusal } from './flaws/lacking.ts';
import { defects } from './flaws/named.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { amissAt } from './naming/meant.ts';
import { wordsOfName } from './naming/rank.ts';
import { phrase, type Talk } from './talk.ts';

/** Things found wrong, missing, damaged, out of true or not fitting; fixed where the talk goes on to say so. */
export function readProblems(talk: Talk): Problem[] {
  const out: Problem[] = [];
  const found = talk.frames.map((frame, at) => flawsIn(talk, frame, at));
  talk.frames.forEach((frame, at) => {
    for (const flaw of found[at]!) {
      const fixedBy = fixIn(talk, frame, at, (k) => found[k]!.length > 0);
      const said = talk.text.slice(frame.start, frame.end).toLowerCase();
      const end = fixedBy ? Math.max(flaw.span.end, fixedBy.end) : flaw.span.end;
      out.push({
        ...base(talk, frame, flaw.rule, { start: flaw.span.start, end }, flaw.confidence),
        kind: 'problem',
        thing: nameOf(talk, flaw, at) || 'something',
        defect: flaw.defect,
        state: fixedBy ? 'fixed' : 'open',
        suspected: /\b(might|maybe|could be|may be|think|looks like|looks|probably|suspect|not sure|seems?)\b/.test(
          said,
        ),
      });
    }
  });
  return merged(out.filter((p) => p.thing !== 'something'));
}

/** The thing's name by the weights of `naming/`; the words that gave the flaw away only where nothing else is named. */
function nameOf(talk: Talk, flaw: Flaw, at: number): string {
  const name = amissAt(talk, at, flaw.thing);
  return name ? wordsOfName(name) : phrase(flaw.thing);
}

/** The same flaw told twice in a note is one. */
function merged(problems: readonly Problem[]): Problem[] {
  const out: Problem[] = [];
  for (const problem of problems) {
    const twin = out.find(
      (p) =>
        (p.start < problem.end && problem.start < p.end && p.thing === problem.thing) ||
        (p.area === problem.area &&
          p.end + 40 > problem.start &&
          (` ${p.thing} `.includes(` ${problem.thing} `) || ` ${problem.thing} `.includes(` ${p.thing} `))) ||
        (p.thing === problem.thing &&
          p.area === problem.area &&
          (p.defect === problem.defect || p.end + 40 > problem.start)),
    );
    if (!twin) out.push(problem);
    else if (problem.state === 'fixed') twin.state = 'fixed';
  }
  return out;
}

/** The flaws that the rules find in one clause. */
export function flawsIn(talk: Talk, frame: Frame, at: number): Flaw[] {
  const { chunks } = frame;
  if (frame.predicate === 'imperative' && !/^(somebody|someone)$/.test(chunks[0]!.word)) return [];
  const said = chunks.map((c) => c.word).join(' ');
  // "My knees are shot": the speaker's own affair.
  if (chunks[0]!.word === 'my') return [];
  if (/\b(if|unless|in case)\b/.test(said.split(' ').slice(0, 3).join(' ')) || frame.openers.includes('if')) return [];
  const flaw =
    refusal(talk, frame, at) ??
    leftUndone(frame) ??
    harmedBy(frame) ??
    inTheWay(frame) ??
    absence(talk, frame, at) ??
    amiss(talk, frame, at);
  if (flaw) return [flaw];
  const named = defects(talk, frame, at);
  return named.length ? named : cameAcross(frame);
}
