import { factsByRule } from '../../parser/facts/index.ts';
import { readProblems } from '../../parser/facts/problems.ts';
import { cutAround, shared } from '../../parser/facts/spans/cut.ts';
import { featuresOf, KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { repairFeatures } from '../../parser/facts/spans/repaired.ts';
import { rangeIn, type Talk } from '../../parser/facts/talk.ts';
import { type Fact, layOpen } from '../../parser/index.ts';
import type { Span } from '../../parser/types.ts';
import { loadWordClass } from '../../server/words/wordClass.ts';
import { type Note, readFiles } from '../score/lib/corpus.ts';
import type { Example } from './logistic.ts';

/** Notes that the rules were written beside: what the rules read there is truer than it is elsewhere. */
const TUNED = /^(?:batch|opened|talk-1|talk-2)/;

const LIST = { problem: 'problems', followUp: 'followUps', done: 'done' } as const satisfies Record<SpanKind, string>;

/** An annotated note, laid open. */
export interface Laid {
  note: Note;
  talk: Talk;
  tuned: boolean;
  /** Position of its file among the others: a file is by one hand. */
  file: number;
}

/** Every annotated note of `fixtures/notes/seen`. Those held out are never learned from. */
export async function laidOpen(): Promise<Laid[]> {
  const wordClass = await loadWordClass();
  return readFiles('seen').flatMap(({ file, notes }, f) =>
    notes.map((note) => ({
      note,
      talk: layOpen(note.text, { saidAt: note.saidAt, areas: note.areas, wordClass }),
      tuned: TUNED.test(file),
      file: f,
    })),
  );
}

/** Where an answer stands in its note, and whether a careful reader may leave it out. */
export interface Answer {
  start: number;
  end: number;
  optional: boolean;
}

/** A note to learn from: what is known at each chunk, and where each chunk truly stands. */
export interface Lesson {
  talk: Talk;
  /** What the rules read in it. */
  byRule: readonly Fact[];
  tuned: boolean;
  file: number;
  answers: Record<SpanKind, Answer[]>;
  features: string[][];
  /** 0 outside, 1 at the begin, 2 further on; a list a kind. Null within what a careful reader may leave out. */
  places: Record<SpanKind, (number | null)[]>;
}

export const lessons = async (): Promise<Lesson[]> => (await laidOpen()).map(lesson);

function lesson({ note, talk, tuned, file }: Laid): Lesson {
  const told = factsByRule(talk);
  const byRule: Fact[] = [...told.goods, ...told.measurements, ...told.problems, ...told.done, ...told.followUps];
  const features = featuresOf(told.spoken, byRule);
  return {
    talk: told.spoken,
    byRule,
    tuned,
    file,
    answers: Object.fromEntries(KINDS.map((kind) => [kind, spansOf(note, kind)])) as Lesson['answers'],
    // Where rules were fitted to a note, their word is kept apart, so that no weight learns to trust them too far.
    features: tuned
      ? features.map((names) => names.map((name) => (name.startsWith('r') ? `fitted ${name}` : name)))
      : features,
    places: Object.fromEntries(KINDS.map((kind) => [kind, placesOf(talk, spansOf(note, kind))])) as Lesson['places'],
  };
}

function placesOf(talk: Talk, spans: readonly Answer[]): (number | null)[] {
  const places: (number | null)[] = talk.chunks.map(() => 0);
  const inOrder = [...spans].sort((a, b) => a.start - b.start);
  for (const span of inOrder.filter((s) => !s.optional)) {
    const [from, until] = rangeIn(talk.chunks, span);
    places.fill(2, from, until);
    if (from < until) places[from] = 1;
  }
  for (const span of inOrder.filter((s) => s.optional)) {
    const [from, until] = rangeIn(talk.chunks, span);
    if (places.slice(from, until).every((p) => !p)) places.fill(null, from, until);
  }
  return places;
}

/** The answers of a kind, each with its place in the note and the name that it gives. */
export const answersOf = (note: Note, kind: SpanKind): { start: number; end: number; name: string; quote: string }[] =>
  note.gold[LIST[kind]].map((answer, k) => ({
    ...spansOf(note, kind)[k]!,
    name: 'thing' in answer ? answer.thing : answer.task,
    quote: answer.quote,
  }));

/** Every annotated flaw: what is known of it, and whether it was put right. */
export const flaws = async (): Promise<(Example & { tuned: boolean; file: number })[]> =>
  (await laidOpen()).flatMap(({ note, talk, tuned, file }) =>
    spansOf(note, 'problem').flatMap((span, k) => {
      const yes = note.gold.problems[k]!.state === 'fixed';
      return [span, ...withoutItsEnd(talk, span)].map((told) => {
        const cut = cutAround(talk, [told]);
        const byRule = readProblems(cut).some((p) => shared(p, told) > 0 && p.state === 'fixed');
        return { features: repairFeatures(cut, told, byRule), yes, tuned, file };
      });
    }),
  );

/** Its first clause alone: a flaw is often found without the clause that tells of its repair, which then stands behind it. */
function withoutItsEnd(talk: Talk, span: Span): Span[] {
  const [first, next] = cutAround(talk, [span]).frames.filter((f) => f.end > span.start && f.start < span.end);
  return first && next ? [{ start: span.start, end: first.end }] : [];
}

export const spansOf = (note: Note, kind: SpanKind): Answer[] =>
  note.gold[LIST[kind]].map(({ quote, optional = false }) => {
    const start = note.text.indexOf(quote);
    return { start, end: start + quote.length, optional };
  });
