import type { Talk } from '../talk.ts';
import { type Figure, isReadIn } from './figures.ts';
import { isNoun, stemOf, subjectOf } from './telling.ts';

/** A reading told before: its figure and the unit that it was given. */
export interface Earlier {
  figure: Figure;
  unit: string;
}

/** The units that the rest of a note tells, each with where it does as seen from a figure. */
export function unitsNear(talk: Talk, figure: Figure, earlier: readonly Earlier[]): Map<string, string[]> {
  const out = new Map<string, Set<string>>();
  const add = (unit: string | null | undefined, ...signs: string[]) => {
    if (!unit) return;
    const own = out.get(unit) ?? new Set();
    for (const sign of signs) own.add(sign);
    out.set(unit, own);
  };
  const { frame, start, end } = figure;
  const said = talk.reading.quantities.filter((q) => q.unit && q.unitFrom !== 'none' && isReadIn(q));
  for (const q of said) {
    add(q.unit, 'note');
    if (q.start >= frame.start && q.end <= frame.end) add(q.unit, q.end <= start ? 'clause before' : 'clause behind');
  }
  add(said.findLast((q) => q.end <= start)?.unit, 'said last');
  add(said.find((q) => q.start >= end)?.unit, 'said next');
  const group = figure.sides[0]!.group;
  const mate = group && said.find((q) => q.group?.id === group.id);
  add(mate?.unit, `mate ${group?.kind}`);
  const noun = nounBefore(figure);
  const before = earlier.at(-1);
  if (before) {
    const clauses = figure.at - before.figure.at;
    const stop = talk.frames[before.figure.at]!.sentence === frame.sentence ? '' : '.';
    const far = `${Math.min(clauses, 3)}${stop}`;
    add(
      before.unit,
      'read last',
      `read last ${far}`,
      `read last ${before.figure.unit ? 'said' : 'bare'} ${far}`,
      `read last w-1 ${frame.chunks[figure.from - 1]?.word ?? '#'}`,
      `read last subject ${subjectOf(frame)} ${Math.min(clauses, 2)}`,
    );
    if (noun && noun === nounBefore(before.figure)) add(before.unit, 'read last same noun');
  }
  if (noun) add(earlier.findLast((x) => nounBefore(x.figure) === noun)?.unit, 'read of same noun');
  for (const x of earlier.slice(0, -1)) add(x.unit, 'read earlier');
  return new Map([...out].map(([unit, signs]) => [unit, [...signs]]));
}

/** The noun told last before a figure in its clause, or nothing. */
function nounBefore({ frame, from }: Figure): string {
  const noun = frame.chunks.slice(0, from).findLast(isNoun);
  return noun ? stemOf(noun) : '';
}
