import { KINDS, type SpanKind } from './features.ts';
import type { Proposal } from './likely.ts';

/** From this likelihood on, a proposal counts as told when its neighbours are weighed. */
const TOLD = 0.3;

const BOUNDS = [0.1, 0.25, 0.45, 0.65, 0.85, 0.96];
/** How likely, in seven steps. */
const step = (likely: number): number => BOUNDS.filter((b) => likely >= b).length;

/**
 * What the rest of a note says of a proposal: how likely it was by its chunks alone, which other kinds may stand at the
 * same words, what is told before and after, and how much of the note tells of each kind.
 */
export function noteSigns(proposals: readonly Proposal[], own: Proposal, predicate: string): string[] {
  const likely = step(own.likely);
  const told = proposals.filter((p) => p.likely > TOLD);
  const before = told.filter((p) => p.until <= own.from).sort((a, b) => a.until - b.until);
  const after = told.filter((p) => p.from >= own.until).sort((a, b) => a.from - b.from);
  return [
    `likely=${likely}`,
    `likely=${likely}|${predicate}`,
    ...beside(proposals, own, likely),
    ...neighbour('before', before.at(-1), own),
    ...neighbour('after', after[0], own),
    ...shares(proposals, own, predicate),
  ];
}

/** The likeliest of each other kind that overlaps it. */
const beside = (proposals: readonly Proposal[], own: Proposal, likely: number): string[] =>
  KINDS.filter((kind) => kind !== own.kind).flatMap((kind) => {
    const best = proposals
      .filter((p) => p.kind === kind && p.from < own.until && own.from < p.until)
      .sort((a, b) => b.likely - a.likely)[0];
    const rival = best ? step(best.likely) : 'none';
    return [`beside=${kind}|${rival}`, `beside=${kind}|${rival}|${likely}`];
  });

function neighbour(side: 'before' | 'after', other: Proposal | undefined, own: Proposal): string[] {
  if (!other) return [`${side} none`];
  const gap = side === 'before' ? own.from - other.until : other.from - own.until;
  const far = gap <= 1 ? gap : gap <= 3 ? 3 : gap <= 8 ? 8 : 'far';
  return [`${side} gap=${other.kind}|${far}`, `${side} likely=${other.kind}|${step(other.likely)}`];
}

/** Whether the note is one of flaws, of plans or of finished work, as a whole and up to here. */
function shares(proposals: readonly Proposal[], own: Proposal, predicate: string): string[] {
  const sum = (kind: SpanKind, until: number) =>
    proposals.reduce((s, p) => (p.kind === kind && p.from < until ? s + p.likely : s), 0);
  const whole = KINDS.map((kind) => sum(kind, Number.POSITIVE_INFINITY));
  const soFar = KINDS.map((kind) => sum(kind, own.from));
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
