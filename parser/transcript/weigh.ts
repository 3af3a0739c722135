import type { Fact, NoteReading, TermKind } from '../types.ts';

/** Among this many words talk about the work names a thing, a task, a flaw or a size. */
const WORDS_A_TERM = 14;
/** What is less sure than this is not written down from a recording. */
const SURE = 0.5;
/** What must be reached in a passage that is mostly chatter. */
const SURE_IN_CHATTER = 0.75;

const WORK: ReadonlySet<TermKind> = new Set([
  'material',
  'part',
  'fixture',
  'surface',
  'defect',
  'task',
  'finish',
  'work',
]);

/** The facts of one passage that somebody who listened would have written down. */
export function worthKeeping(reading: NoteReading): Fact[] {
  const words = reading.heard.tokens.filter((t) => t.kind === 'word' && !t.skip).length;
  const named = reading.terms.filter((m) => WORK.has(m.term.kind)).length + reading.quantities.length;
  const floor = named * WORDS_A_TERM < words ? SURE_IN_CHATTER : SURE;
  return reading.facts.filter((fact) => {
    // People talk to one another here, not to the list.
    if (fact.kind === 'command') return false;
    if (fact.kind === 'material' && fact.status === 'mentioned') return false;
    if (fact.confidence < floor) return false;
    const about = reading.terms.some((m) => WORK.has(m.term.kind) && m.start < fact.end && m.end > fact.start);
    return about || fact.kind === 'spending';
  });
}
