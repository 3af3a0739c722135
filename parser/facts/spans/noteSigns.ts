import { countWhile } from '../talk.ts';
import { KINDS, type SpanKind } from './features.ts';
import type { Proposal } from './likely.ts';

/** From this likelihood on, a proposal counts as told when its neighbours are weighed. */
const TOLD = 0.3;

const BOUNDS = [0.1, 0.25, 0.45, 0.65, 0.85, 0.96];
/** How likely, in seven steps. */
const step = (likely: number): number => BOUNDS.filter((b) => likely >= b).length;

/** Says what the rest of a note says of one of its proposals. */
export type NoteSigns = (own: Proposal, predicate: string) => string[];

/**
 * What the rest of a note says of a proposal: how likely it was by its chunks alone, which other kinds may stand at the
 * same words, what is told before and after, and how much of the note tells of each kind.
 *
 * @param proposals of the whole note, those of a kind in order and none over another
 */
export function noteSignsIn(proposals: readonly Proposal[]): NoteSigns {
  const ofKind = KINDS.map((kind) => proposals.filter((p) => p.kind === kind));
  const told = proposals.filter((p) => p.likely > TOLD);
  const byEnd = [...told].sort((a, b) => a.until - b.until);
  const byStart = [...told].sort((a, b) => a.from - b.from);
  const sums = ofKind.map(sumsOf);
  return (own, predicate) => {
    const likely = step(own.likely);
    return [
      `likely=${likely}`,
      `likely=${likely}|${predicate}`,
      ...KINDS.flatMap((kind, k) => (kind === own.kind ? [] : beside(kind, ofKind[k]!, own, likely))),
      ...neighbour('before', byEnd[countWhile(byEnd, (p) => p.until <= own.from) - 1], own),
      ...neighbour('after', byStart[countWhile(byStart, (p) => p.from < own.until)], own),
      ...shares(ofKind, sums, own, predicate),
    ];
  };
}

/** What the first none, one, two ... of a kind sum up to. */
function sumsOf(ofKind: readonly Proposal[]): number[] {
  const out = [0];
  for (const { likely } of ofKind) out.push(out.at(-1)! + likely);
  return out;
}

/** The likeliest of another kind that overlaps it. */
function beside(kind: SpanKind, ofKind: readonly Proposal[], own: Proposal, likely: number): string[] {
  let best: Proposal | undefined;
  for (let k = countWhile(ofKind, (p) => p.until <= own.from); k < ofKind.length && ofKind[k]!.from < own.until; k++)
    if (!best || ofKind[k]!.likely > best.likely) best = ofKind[k];
  const rival = best ? step(best.likely) : 'none';
  return [`beside=${kind}|${rival}`, `beside=${kind}|${rival}|${likely}`];
}

function neighbour(side: 'before' | 'after', other: Proposal | undefined, own: Proposal): string[] {
  if (!other) return [`${side} none`];
  const gap = side === 'before' ? own.from - other.until : other.from - own.until;
  const far = gap <= 1 ? gap : gap <= 3 ? 3 : gap <= 8 ? 8 : 'far';
  return [`${side} gap=${other.kind}|${far}`, `${side} likely=${other.kind}|${step(other.likely)}`];
}

/** Whether the note is one of flaws, of plans or of finished work, as a whole and up to here. */
function shares(
  ofKind: readonly (readonly Proposal[])[],
  sums: readonly (readonly number[])[],
  own: Proposal,
  predicate: string,
): string[] {
  const whole = sums.map((row) => row.at(-1)!);
  const soFar = sums.map((row, k) => row[countWhile(ofKind[k]!, (p) => p.from < own.from)]!);
  const [all, some] = [whole, soFar].map((sums) => sums.reduce((a, b) => a + b, 0));
  return [
    `expected=${Math.min(8, Math.round(whole[KINDS.indexOf(own.kind)]!))}`,
    ...KINDS.flatMap((kind, k) => {
      const share = Math.floor((5 * whole[k]!) / all!);
      const told = some! > 0.5 ? Math.floor((4 * soFar[k]!) / some!) : 'none';
      return [`share=${kind}|${share}`, `share=${kind}|${share}|${predicate}`, `so far=${kind}|${told}`];
    }),
  ];
}
