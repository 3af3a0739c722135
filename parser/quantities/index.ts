import Fraction from 'fraction.js';
import type { NotQuantity, Quantity, Token } from '../types.ts';
import { amountAt } from './amounts.ts';
import { correct } from './corrections.ts';
import type { Draft } from './draft.ts';
import { doubtTeens, shareUnits, tie } from './group.ts';
import { hedge } from './hedges.ts';
import { Line } from './line.ts';
import { claimsIn } from './others/index.ts';

/**
 * Every quantity of a note, exact, with the span of its own words, and the numbers that are none.
 * A number that cannot be read for sure is left out: no reading rather than a wrong one.
 */
export function readQuantities(
  tokens: readonly Token[],
  text: string,
): { quantities: Quantity[]; notQuantities: NotQuantity[] } {
  const line = new Line(tokens);
  const claims = claimsIn(line);
  const claimed = new Uint8Array(line.tokens.length);
  for (const claim of claims) claimed.fill(1, claim.from, claim.until);
  const drafts = draftsIn(line, claimed);
  tie(line, drafts);
  const standing = correct(line, tokens, drafts);
  shareUnits(standing);
  doubtTeens(line, standing);
  for (const draft of standing) hedge(line, draft);
  const spanOf = (from: number, until: number) => {
    const span = { start: line.tokens[from]!.start, end: line.tokens[until - 1]!.end };
    const range = { from: line.place(from), until: line.place(until - 1) + 1 };
    return { ...span, ...range, quote: text.slice(span.start, span.end) };
  };
  return {
    quantities: standing.map((draft, i) => ({
      ...readingOf(draft, tokens, standing, i),
      ...spanOf(draft.from, draft.until),
    })),
    notQuantities: claims.map(({ kind, from, until, value }) => ({
      kind,
      ...spanOf(from, until),
      ...(value && { value }),
    })),
  };
}

function draftsIn(line: Line, claimed: Uint8Array): Draft[] {
  const drafts: Draft[] = [];
  for (let i = 0; i < line.tokens.length; ) {
    const draft = claimed[i] ? null : amountAt(line, i);
    const free = draft !== null && !claimed.subarray(i, draft.until).includes(1);
    if (free) drafts.push(draft);
    i = free ? draft.until : i + 1;
  }
  return drafts;
}

type Reading = Omit<Quantity, 'start' | 'end' | 'from' | 'until' | 'quote'>;

function readingOf(draft: Draft, tokens: readonly Token[], drafts: readonly Draft[], i: number): Reading {
  const { n, d, unit, unitFrom, rule, bound, tolerance, onCenter, per, doubt, instead } = draft;
  const group = placeIn(drafts, i);
  return {
    value: new Fraction(n, d),
    unit: unit?.unit ?? null,
    unitKind: unit?.kind ?? null,
    unitFrom,
    rule,
    ...(group && { group }),
    ...(tolerance && { tolerance }),
    ...(bound && { bound }),
    ...(onCenter && { onCenter }),
    ...(per && { per }),
    ...(instead && { takenBackFrom: tokens[instead[0]!.from]!.start, replaces: instead }),
    ...(doubt && { doubt }),
  };
}

/** Groups are runs of neighbours, so a member's place is its distance to the run's ends. */
function placeIn(drafts: readonly Draft[], i: number): Quantity['group'] | null {
  const group = drafts[i]!.group;
  if (!group) return null;
  let first = i;
  let end = i + 1;
  while (drafts[first - 1]?.group?.id === group.id) first--;
  while (drafts[end]?.group?.id === group.id) end++;
  return end - first > 1 ? { kind: group.kind, id: group.id, index: i - first, size: end - first } : null;
}
