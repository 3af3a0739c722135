import Fraction from 'fraction.js';
import { readNote } from '../../parser/index.ts';
import { type Entry, fold } from '../../server/jobs/index.ts';
import { toBuy } from '../../server/takeoff/calculators/reckoned.ts';
import { compute } from '../../server/takeoff/index.ts';

/** What a job's notes, said an hour apart, put on the order: `vinyl plank: 4 box`, why, and what is asked. */
export function orderOf(
  areas: readonly string[],
  ...notes: string[]
): { order: string[]; because: string[]; questions: string[] } {
  const entries = notes.map((text, k): Entry => {
    const at = `2026-03-02T${String(8 + k).padStart(2, '0')}:00:00`;
    const { facts } = readNote(text, { saidAt: at, areas: [...areas] });
    const source = { noteId: `n${k}`, start: 0, end: text.length };
    return { id: `n${k}`, jobId: 'j', at, by: null, source, what: { kind: 'noteRead', facts, text, parser: '1' } };
  });
  const state = fold({ areas: [...areas], builtYear: null }, entries, '2026-03-02T23:00:00');
  const amount = (q: string | null) => (q === null ? '?' : new Fraction(q).toFraction());
  return {
    order: state.order.map((l) => `${[l.item, l.size].filter(Boolean).join(' ')}: ${amount(l.quantity)} ${l.unit}`),
    because: state.order.map((l) => l.because),
    questions: state.questions.map((q) => q.ask),
  };
}

/** What the take-offs alone reckon, without the goods that the notes name outright: `stud 2x4 8 ft: 12 each`. */
export function takeOffOf(areas: readonly string[], ...texts: string[]): string[] {
  const notes = texts.map((text, k) => ({ noteId: `n${k}`, saidAt: `2026-03-02T${10 + k}:00:00`, text, facts: [] }));
  return compute(notes, { areas: [...areas], builtYear: null }).lines.map(
    (l) => `${[l.item, l.size].filter(Boolean).join(' ')}: ${toBuy(l)} ${l.pack?.unit ?? l.unit}`,
  );
}
