/**
 * Learns where problems, plans and finished work stand, from the annotated notes, and writes `parser/facts/spans/table.ts`.
 * `npx tsx tests/learn/spans.ts` writes it; with `--folds` it only tells how well notes left out of the learning are read.
 */
import { KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { PLACES, rangesOf } from '../../parser/facts/spans/tagger.ts';
import { readTable } from '../../parser/facts/spans/weights.ts';
import { type Lesson, lessons } from './corpus.ts';
import { type Field, learn } from './field.ts';
import { writeTable } from './table.ts';

/** Weights under this are left out of the table. Many small ones decide together: left out at 0.2, problems held out fell from 0.81 to 0.74. */
const LEAST = 0.06;

/** Added to every begin: learned with what may be left out as neither right nor wrong, weights are too shy alone. */
const LEAN = 0.5;
/** The feature that every chunk has. */
const EVERYWHERE = 'any';

const fieldsOf = (notes: readonly Lesson[]): Record<SpanKind, Field> =>
  Object.fromEntries(
    KINDS.map((kind) => [kind, learn(notes.map((n) => ({ features: n.features, places: n.places[kind] })))]),
  ) as Record<SpanKind, Field>;

/** The table's text: `weights.ts` says how it is laid out. */
function tableOf(fields: Record<SpanKind, Field>): string {
  const names = new Set(KINDS.flatMap((kind) => [...fields[kind].ids.keys()]));
  const lines: string[] = [];
  for (const a of [0, 1, 2])
    for (const b of [0, 1, 2])
      lines.push(
        [
          `>${PLACES[a]}>${PLACES[b]}`,
          ...KINDS.map((kind) => Math.round(100 * fields[kind].weights[fields[kind].ids.size * 3 + a * 3 + b]!)),
        ].join('\t'),
      );
  for (const name of [...names].sort()) {
    if (name.startsWith('fitted ')) continue;
    const cells = KINDS.flatMap((kind) => {
      const id = fields[kind].ids.get(name);
      if (id === undefined) return ['', ''];
      const [out, begin, goOn] = fields[kind].weights.slice(id * 3, id * 3 + 3);
      const lean = name === EVERYWHERE ? LEAN : 0;
      return [begin! - out! + lean, goOn! - out!].map((w) => (Math.abs(w) < LEAST ? '' : String(Math.round(100 * w))));
    });
    if (cells.some(Boolean)) lines.push([name, ...cells].join('\t').trimEnd());
  }
  return lines.join('\n');
}

/** Spans met, of those wanted and of those given: one meets another where they share half of the shorter. */
function tally(notes: readonly Lesson[], table: string, trust: number) {
  const weights = readTable(table);
  return KINDS.map((kind) => {
    const t = { wanted: 0, given: 0, met: 0 };
    for (const note of notes) {
      const given = rangesOf(note.features, weights[kind], `r=${kind}B`, trust);
      const wanted = rangesIn(note.places[kind]);
      t.wanted += wanted.length;
      t.given += given.filter((g) => !note.places[kind].slice(g.from, g.until).includes(null)).length;
      for (const w of wanted) {
        const hit = given.findIndex(
          (g) =>
            Math.min(g.until, w.until) - Math.max(g.from, w.from) >= 0.5 * Math.min(g.until - g.from, w.until - w.from),
        );
        if (hit < 0) continue;
        t.met++;
        given.splice(hit, 1);
      }
    }
    return t;
  });
}

function rangesIn(places: Lesson['places'][SpanKind]): { from: number; until: number }[] {
  const out: { from: number; until: number }[] = [];
  places.forEach((place, t) => {
    if (place === 1) out.push({ from: t, until: t + 1 });
    if (place === 2) out.at(-1)!.until = t + 1;
  });
  return out;
}

const notes = await lessons();
if (process.argv.includes('--folds')) {
  const FOLDS = 5;
  for (const trust of [0, 2]) {
    const sums = KINDS.map(() => ({ wanted: 0, given: 0, met: 0 }));
    for (let k = 0; k < FOLDS; k++) {
      const table = tableOf(fieldsOf(notes.filter((_, i) => i % FOLDS !== k)));
      // Rules fitted to a note say nothing of how unseen ones are read.
      const left = notes.filter((n, i) => i % FOLDS === k && !n.features[0]?.some((f) => f.startsWith('fitted ')));
      tally(left, table, trust).forEach((t, j) => {
        for (const key of ['wanted', 'given', 'met'] as const) sums[j]![key] += t[key];
      });
    }
    KINDS.forEach((kind, j) => {
      const { wanted, given, met } = sums[j]!;
      const of = (a: number, b: number) => (b ? a / b : 1).toFixed(3);
      console.log(
        `trust ${trust} ${kind.padEnd(9)} F1 ${of(2 * met, wanted + given)} precision ${of(met, given)} recall ${of(met, wanted)}`,
      );
    });
  }
} else {
  writeTable(
    'parser/facts/spans/table.ts',
    'TABLE',
    'Written by tests/learn/spans.ts: `weights.ts` says how it is laid out.',
    tableOf(fieldsOf(notes)).split('\n'),
  );
}
