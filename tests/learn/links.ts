/**
 * `npx tsx tests/learn/links.ts [--judge] files...`: learns from annotated jobs which item each fact is told of, and writes
 * `server/jobs/linking/table.ts`. With `--judge` it writes nothing: it learns from the other jobs at a time and counts how
 * often the right item is met. A job's items say in `told` where the notes speak of them.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { readNote } from '../../parser/index.ts';
import type { Standing } from '../../server/jobs/board.ts';
import { fold } from '../../server/jobs/index.ts';
import { type Linker, type Option, optionsOf } from '../../server/jobs/linking/index.ts';
import { namingOf, signsOfEnd, type Told } from '../../server/jobs/linking/signs.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { loadWordClass } from '../../server/words/wordClass.ts';
import { type Choice, choose, learn } from './choice.ts';
import { type Example, learnYes } from './logistic.ts';
import { linesOf } from './table.ts';

interface ToldAt { note: number; quote: string; does: 'opens' | 'again' | 'closes' | 'reopens' | 'drops' }
interface JobFile {
  id: string;
  start: string;
  rooms: string[];
  builtYear?: number;
  notes: { saidAt: string; text: string; by?: string }[];
  end: { asOf: string; open: { told: ToldAt[] }[]; closed: { told: ToldAt[] }[] };
}

export const entriesOf = (job: JobFile): Entry[] =>
  job.notes.map((note, k) => {
    const noteId = `${job.id}-${String(k).padStart(4, '0')}`;
    const { facts } = readNote(note.text, { saidAt: note.saidAt, areas: job.rooms, wordClass });
    return {
      id: noteId,
      jobId: job.id,
      at: note.saidAt,
      by: note.by ?? null,
      source: { noteId, start: 0, end: note.text.length },
      what: { kind: 'noteRead', facts, text: note.text, parser: '1' },
    };
  });

const wordClass = await loadWordClass();

interface Lesson { choice: Choice; sort: string; ends: (Example & {})[] }

/** Folds a job with a teacher who knows its items, and notes down every choice that came up. */
export function lessonsOf(job: JobFile, n: number): { choices: (Choice & { sort: string })[]; ends: (Example & { note: number })[]; state: ReturnType<typeof fold> } {
  const choices: (Choice & { sort: string })[] = [];
  const ends: (Example & { note: number })[] = [];
  const items = [...job.end.open, ...job.end.closed];
  const standing = new Map<number, () => Standing | undefined>();
  const teacher: Linker = (telling, fact, ruled) => {
    const note = Number(telling.entry.id.split('-').at(-1));
    const text = job.notes[note]!.text;
    const naming = namingOf(fact);
    const hits = items.flatMap((item, i) =>
      item.told.flatMap((told) => {
        if (told.note !== note) return [];
        const start = text.indexOf(told.quote);
        const [s, e] = [Math.max(start, fact.start), Math.min(start + told.quote.length, fact.end)];
        const part = (e - s) / Math.max(1, Math.min(told.quote.length, fact.end - fact.start));
        return part >= 0.5 ? [{ i, does: told.does, part, fits: e - s }] : [];
      }),
    );
    const does = (k: string) => hits.filter((h) => h.does === k);
    const finished = naming.sort === 'done' || naming.sort === 'fixed';
    const hit = (finished ? [...does('closes'), ...hits] : [...does('opens'), ...does('again'), ...does('reopens'), ...hits])[0];
    const known = hit ? standing.get(hit.i)?.() : undefined;
    const right = known ?? (hit || finished ? 'new' : 'none');
    const options = optionsOf(telling, naming, ruled);
    const same = (o: Option) => o.is === right || (hit !== undefined && typeof o.is === 'object' && hits.some((h) => standing.get(h.i)?.() === o.is));
    if (options.some(same))
      choices.push({ note: n, sort: naming.sort, quote: fact.quote, answers: options.map((o) => ({ what: typeof o.is === 'object' ? `${o.is.task} <${o.is.history[0]?.words}>` : o.is, signs: o.signs, worth: same(o) ? 1 : 0 })) } as never);
    const item = known ?? null;
    const over = hit !== undefined && hits.some((h) => h.does === 'closes' && h.i === hit.i);
    if (hit) ends.push({ note: n, features: signsOfEnd(naming, item, telling.tail), yes: over });
    if (hit && !known) {
      const { board, key } = telling;
      standing.set(hit.i, () => board.byKey.get(key));
    }
    return { item, kept: right !== 'none', ends: hit ? over : finished, perhaps: null };
  };
  const state = fold({ areas: job.rooms, builtYear: job.builtYear ?? null, linker: teacher }, entriesOf(job), job.end.asOf);
  return { choices, ends, state };
}

const SETTINGS = { epochs: 12, rate: 0.15, shrink: 0.1, atLeast: 3 };
const files = process.argv.slice(2).filter((a) => !a.startsWith('--'));
const lessons = files.map((file, n) => lessonsOf(JSON.parse(readFileSync(file, 'utf8')), n));
const choices = lessons.flatMap((l) => l.choices);
const ends = lessons.flatMap((l) => l.ends);
if (process.argv.includes('--judge')) {
  const FOLDS = 6;
  const t: Record<string, [number, number]> = {};
  const add = (k: string, ok: boolean) => { const c = (t[k] ??= [0, 0]); c[1]++; if (ok) c[0]++; };
  for (let k = 0; k < FOLDS; k++) {
    const w = learn(choices.filter((c) => c.note % FOLDS !== k), SETTINGS);
    const e = learnYes(ends.filter((c) => c.note % FOLDS !== k), { decay: 0.03, seenAtLeast: 3 });
    for (const c of choices.filter((c) => c.note % FOLDS === k)) {
      const i = choose(c, w);
      const kind = (j: number) => { const s = c.answers[j]!.signs[0]!; return s.startsWith('new') ? 'new' : s === 'none' ? 'none' : 'join'; };
      const right = c.answers.findIndex((a) => a.worth > 0);
      add(`${c.sort}`, c.answers[i]!.worth > 0);
      add(`${c.sort} ${kind(right)} -> ${kind(i)}${kind(i) === 'join' && kind(right) === 'join' ? (c.answers[i]!.worth > 0 ? ' right' : ' wrong') : ''}`, c.answers[i]!.worth > 0);
      add('all', c.answers[i]!.worth > 0); if (process.env.WRONG && !c.answers[i]!.worth) { const x = c as any; console.log('WRONG', c.sort, '|', x.quote, '| got', x.answers[i].what, '| want', x.answers[right].what); }
      const ruled = c.answers.findIndex((a) => a.signs.includes('rules same'));
      add('all by rules', (ruled >= 0 ? c.answers[ruled]! : c.answers[0]!).worth > 0);
    }
    for (const x of ends.filter((c) => c.note % FOLDS === k)) add('ends', x.features.reduce((s, f) => s + (e.get(f) ?? 0), 0) > 0 === x.yes);
  }
  for (const [k, [a, b]] of Object.entries(t).sort()) console.log(k.padEnd(32), a, b, (a / b).toFixed(3));
} else {
  const w = learn(choices, SETTINGS);
  const e = learnYes(ends, { decay: 0.03, seenAtLeast: 3 });
  const lines = linesOf([new Map([...w, ...e])], 0.05);
  writeFileSync(new URL('../../server/jobs/linking/table.ts', import.meta.url), `/** Written by tests/learn/links.ts: a sign, and hundredths for what it says. */\nexport const LINKS = \`\n${lines.join('\n').replace(/[\\`$]/g, '\\$&')}\n\`;\n`);
  console.log(lines.length, 'lines');
}
