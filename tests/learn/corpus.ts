import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { factsByRule } from '../../parser/facts/index.ts';
import { readProblems } from '../../parser/facts/problems.ts';
import { cutAround, shared } from '../../parser/facts/spans/cut.ts';
import { featuresOf, KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { namePartsIn } from '../../parser/facts/spans/names.ts';
import { repairFeatures } from '../../parser/facts/spans/repaired.ts';
import type { Fact } from '../../parser/index.ts';
import { layOpen } from '../../parser/index.ts';
import { loadWordClass } from '../../server/words/wordClass.ts';
import { contentWords } from '../score/lib/wording.ts';
import type { Example } from './logistic.ts';

const SEEN = join(import.meta.dirname, '../../fixtures/notes/seen');

/** Notes that the rules were written beside: what the rules read there is truer than it is elsewhere. */
const TUNED = /^(?:batch|opened|talk-1|talk-2)/;

const LIST: Readonly<Record<SpanKind, string>> = { problem: 'problems', followUp: 'followUps', done: 'done' };

/** A note to learn from: what is known at each chunk, and where each chunk truly stands. */
export interface Lesson {
  id: string;
  features: string[][];
  /** 0 outside, 1 at the begin, 2 further on; a list a kind. */
  places: Record<SpanKind, number[]>;
}

interface Note {
  id: string;
  saidAt: string;
  text: string;
  areas?: string[];
  gold: Record<string, { quote: string; state?: string; thing?: string; task?: string }[]>;
}

const notesOf = (file: string): Note[] =>
  readFileSync(join(SEEN, file), 'utf8')
    .split('\n')
    .filter((line) => line.trim())
    .map((line) => JSON.parse(line) as Note);

const files = () => readdirSync(SEEN).filter((file) => file.endsWith('.jsonl'));

/** Every annotated note of `fixtures/notes/seen`. Those held out are never learned from. */
export async function lessons(): Promise<Lesson[]> {
  const wordClass = await loadWordClass();
  return files().flatMap((file) => notesOf(file).map((note) => lesson(note, TUNED.test(file), wordClass)));
}

/** A chunk of an annotated span, and whether it belongs to the name that the answer gives. */
export interface Named extends Example {
  note: string;
  tuned: boolean;
}

/** The chunks of every annotated span of a kind. */
export async function named(kind: SpanKind): Promise<Named[]> {
  const wordClass = await loadWordClass();
  return files().flatMap((file) =>
    notesOf(file).flatMap((note) => {
      const talk = layOpen(note.text, { saidAt: note.saidAt, areas: note.areas ?? [], wordClass });
      const answers = note.gold[LIST[kind]]!.map((answer) => ({ answer, span: spanOf(note, answer.quote) }));
      const cut = cutAround(
        talk,
        answers.map(({ span }) => span),
      );
      const told = factsByRule(cut);
      const facts: Fact[] = kind === 'problem' ? told.problems : kind === 'done' ? told.done : told.followUps;
      return answers.flatMap(({ answer, span }) => {
        const words = contentWords(answer.thing ?? answer.task ?? '');
        const own = facts.find((f) => shared(f, span) >= 0.5);
        const byRule = own?.kind === 'problem' ? own.thing : own && 'task' in own ? own.task : '';
        return namePartsIn(cut, span, byRule).map(({ chunk, features }) => ({
          note: note.id,
          tuned: TUNED.test(file),
          features,
          yes: [...contentWords(chunk.word)].some((word) => words.has(word)),
        }));
      });
    }),
  );
}

const spanOf = (note: Note, quote: string) => {
  const start = note.text.indexOf(quote);
  return { start, end: start + quote.length };
};

/** Every annotated flaw: what is known of it, and whether it was put right. */
export async function flaws(): Promise<(Example & { tuned: boolean })[]> {
  const wordClass = await loadWordClass();
  return files().flatMap((file) =>
    notesOf(file).flatMap((note) => {
      const talk = layOpen(note.text, { saidAt: note.saidAt, areas: note.areas ?? [], wordClass });
      return note.gold.problems!.map(({ quote, state }) => {
        const span = spanOf(note, quote);
        const cut = cutAround(talk, [span]);
        const fixed = readProblems(cut).some((p) => shared(p, span) > 0 && p.state === 'fixed');
        return { features: repairFeatures(cut, span, fixed), yes: state === 'fixed', tuned: TUNED.test(file) };
      });
    }),
  );
}

function lesson(note: Note, tuned: boolean, wordClass: Awaited<ReturnType<typeof loadWordClass>>): Lesson {
  const talk = layOpen(note.text, { saidAt: note.saidAt, areas: note.areas ?? [], wordClass });
  const told = factsByRule(talk);
  const proposed: Fact[] = [...told.goods, ...told.measurements, ...told.problems, ...told.done, ...told.followUps];
  const features = featuresOf(told.spoken, proposed);
  const places = Object.fromEntries(
    KINDS.map((kind) => [
      kind,
      placesOf(
        talk.chunks,
        note.gold[LIST[kind]]!.map(({ quote }) => spanOf(note, quote)),
      ),
    ]),
  ) as Record<SpanKind, number[]>;
  return {
    id: note.id,
    // Where rules were fitted to a note, their word is kept apart, so that no weight learns to trust them too far.
    features: tuned
      ? features.map((names) => names.map((name) => (name.startsWith('r') ? `fitted ${name}` : name)))
      : features,
    places,
  };
}

function placesOf(
  chunks: readonly { start: number; end: number }[],
  spans: readonly { start: number; end: number }[],
): number[] {
  const places = chunks.map(() => 0);
  for (const span of [...spans].sort((a, b) => a.start - b.start)) {
    let place = 1;
    chunks.forEach((c, t) => {
      if (c.start < span.start || c.end > span.end) return;
      places[t] = place;
      place = 2;
    });
  }
  return places;
}
