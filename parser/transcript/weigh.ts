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

/** Passages before and after that tell what the talk is about just now. */
const AROUND = 2;

/** For each passage, whether those around it are mostly chatter. */
export function chatterIn(readings: readonly NoteReading[]): boolean[] {
  const words = readings.map((r) => r.heard.tokens.filter((t) => t.kind === 'word' && !t.skip).length);
  const named = readings.map((r) => r.terms.filter((m) => WORK.has(m.term.kind)).length + r.quantities.length);
  const around = (counts: readonly number[], at: number) =>
    counts.slice(Math.max(0, at - AROUND), at + AROUND + 1).reduce((sum, n) => sum + n, 0);
  return readings.map((_, at) => around(named, at) * WORDS_A_TERM < around(words, at));
}

/** The facts of one passage that somebody who listened would have written down. */
export function worthKeeping(reading: NoteReading, chatter: boolean): Fact[] {
  return reading.facts.filter((fact) => {
    // People talk to one another here, not to the list.
    if (fact.kind === 'command') return false;
    if (fact.kind === 'material' && fact.status === 'mentioned') return false;
    // Among chatter, what somebody did or bought is a story.
    if (
      chatter &&
      (fact.kind === 'done' || fact.kind === 'spending' || (fact.kind === 'material' && fact.status !== 'need'))
    )
      return false;
    if (fact.confidence < (chatter ? SURE_IN_CHATTER : SURE)) return false;
    const within = reading.terms.filter((m) => m.start < fact.end && m.end > fact.start);
    return (
      fact.kind === 'spending' ||
      within.some((m) => WORK.has(m.term.kind)) ||
      (fact.kind === 'followUp' && within.some((m) => m.term.kind === 'role'))
    );
  });
}
