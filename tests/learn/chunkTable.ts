import { KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { PLACES } from '../../parser/facts/spans/likely.ts';
import type { Lesson } from './corpus.ts';
import { type Field, learn } from './field.ts';

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

/** Learns what each chunk says, as the text of a table: `weights.ts` says how it is laid out. */
export function chunkTable(notes: readonly Lesson[]): string {
  const fields = fieldsOf(notes);
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
