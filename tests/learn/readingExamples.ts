import { type Answer, answersFor } from '../../parser/facts/measurements/answers.ts';
import { figuresIn } from '../../parser/facts/measurements/figures.ts';
import type { Earlier } from '../../parser/facts/measurements/near.ts';
import { systemOf } from '../../parser/facts/measurements/signs.ts';
import type { Talk } from '../../parser/facts/talk.ts';
import type { Quantity } from '../../parser/types.ts';
import { sameAmount } from '../score/lib/amounts.ts';
import type { Gold, Note } from '../score/lib/corpus.ts';
import type { Choice } from './choice.ts';

/** The names of an answer's signs, each with the column that weighs it. */
const signsOf = ({ signs }: Answer) => signs.flatMap(([column, names]) => names.map((name) => `${column}\t${name}`));

/** A choice for every figure that is no goods' own (`taken`): the unit of the answer that it is, or none. */
export function readingChoices(talk: Talk, note: Note, n: number, taken: ReadonlySet<Quantity>): Choice[] {
  const open = note.gold.measurements.map((gold) => {
    const start = note.text.indexOf(gold.quote);
    return { gold, start, end: start + gold.quote.length };
  });
  const truth = (q: Quantity): Gold<'measurements'> | null => {
    const hit = open.findIndex(({ gold, start, end }) => {
      const both = Math.min(q.end, end) - Math.max(q.start, start);
      return both >= (q.end - q.start) / 2 && isOf(gold, q);
    });
    return hit < 0 ? null : open.splice(hit, 1)[0]!.gold;
  };
  const system = systemOf(talk);
  const earlier: Earlier[] = [];
  return figuresIn(talk, taken).map((figure) => {
    const truths = figure.sides.map(truth);
    const answers = answersFor(talk, figure, system, earlier).map((answer) => ({
      signs: signsOf(answer),
      worth: truths.reduce((sum, gold) => sum + worth(gold, answer.unit), 0) / truths.length,
    }));
    const unit = truths.find((gold) => gold)?.unit;
    if (unit) earlier.push({ figure, unit });
    return { note: n, answers };
  });
}

/** Is a figure what an answer tells, in whatever unit it may be read? */
const isOf = (gold: Gold<'measurements'>, q: Quantity) =>
  sameAmount(gold.value, gold.unit, q.value.valueOf(), q.unit) ||
  ((q.unitFrom === 'none' || q.unit === 'lb' || q.unit === 'deg') && Math.abs(gold.value - q.value.valueOf()) < 1e-6);

/** What a careful reader may leave out is right either way. */
function worth(gold: Gold<'measurements'> | null, unit: string | null): number {
  if (unit === null) return Number(!gold || gold.optional === true);
  return Number(gold !== null && sameAmount(1, gold.unit, 1, unit));
}
