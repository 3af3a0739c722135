import Fraction from 'fraction.js';
import type { NotQuantity, Quantity, Token, TokenRange } from '../types.ts';
import { amountAt } from './amounts.ts';
import { elbowAt } from './bends.ts';
import { correct } from './corrections.ts';
import { countsFirst } from './countFirst.ts';
import type { Draft } from './draft.ts';
import { doubtTeens, shareUnits, tie } from './group.ts';
import { hedge } from './hedges.ts';
import { Line } from './line.ts';
import { numberAt } from './numbers.ts';
import { claimsIn, type PlacedClaim } from './others/index.ts';
import { strays } from './strays.ts';
import { sayVolts } from './volts.ts';
import { countless } from './weighing/index.ts';

/**
 * Every quantity of a note, exact, with the span of its own words, and the numbers that are none.
 * A number that cannot be read for sure is left out: no reading rather than a wrong one.
 *
 * @param names where something goes by a number ("1A", a flat): none is read there
 */
export function readQuantities(
  tokens: readonly Token[],
  text: string,
  names: readonly TokenRange[] = [],
): { quantities: Quantity[]; notQuantities: NotQuantity[] } {
  const line = new Line(tokens, numberAt);
  const claims = claimsIn(line, names);
  const claimed = new Uint8Array(line.tokens.length);
  for (const claim of claims) {
    claimed.fill(1, claim.from, claim.until);
    line.setAside(claim.from, claim.until);
  }
  const drafts = countsFirst(line, draftsIn(line, claimed));
  tie(line, drafts);
  const standing = correct(line, tokens, drafts);
  shareUnits(line, standing);
  sayVolts(standing);
  doubtTeens(line, standing);
  for (let i = 1; i < standing.length; i++) unimply(line, standing[i - 1]!, standing[i]!);
  for (const draft of standing) hedge(line, draft);
  const all = apart(line, standing);
  const stray = strays(line, all);
  const read = stray.size ? all.filter((draft) => !stray.has(draft)) : all;
  const none = new Set([...stray, ...countless(line, read, claims.length)]);
  const kept = none.size ? read.filter((draft) => !none.has(draft)) : read;
  const aside = [...none].map(({ from, until }): PlacedClaim => ({ from, until, kind: 'label' }));
  return {
    quantities: kept.map((draft, i) => readingOf(draft, line, tokens, text, placeIn(kept, i))),
    notQuantities: (aside.length ? [...claims, ...aside].sort((a, b) => a.from - b.from) : claims).map((claim) =>
      setAside(claim, line, text),
    ),
  };
}

/** "Quarter a foot" is one slope, "eighty feet a bag" one rate: what it is reckoned by is no reading of its own. */
function apart(line: Line, drafts: readonly Draft[]): Draft[] {
  const out: Draft[] = [];
  for (const draft of drafts) {
    const before = out.at(-1);
    // "12 ft. A foot at every end": nothing is reckoned in itself.
    if (before?.per && before.per === before.unit?.unit) before.per = undefined;
    const isRate = before?.per === draft.unit?.unit && draft.n === 1 && leads(line, before?.until ?? 0, draft.from);
    if (draft.from >= (before?.until ?? 0) && !(before?.per && isRate)) out.push(draft);
  }
  return out;
}

/** "Feet to a bag", "feet per": nothing else stands between, as it does in "19 sq ft a box. One box left". */
function leads(line: Line, from: number, until: number): boolean {
  for (let k = from; k < until; k++) if (!LEADS.test(line.word(k))) return false;
  return true;
}
const LEADS = /^(?:per|to|in|for|each|every|\/)$/;

/** How far "order five and a half" reaches back to the yards that were said. */
const SAME_BREATH = 9;

/** "Fourteen percent, oak's at eight and a half": a number with a part goes on in what was read before it, not in inches. */
function unimply(line: Line, before: Draft, draft: Draft): void {
  const goesOn =
    before.unitFrom === 'said' &&
    (/^(?:yd|square)$/.test(before.unit?.unit ?? '') || /^(?:percent|volume)$/.test(before.unit?.kind ?? ''));
  const near = draft.from - before.until < SAME_BREATH;
  // "Thirty one foot on deck and draws four and a half".
  if (
    near &&
    before.unitFrom === 'said' &&
    before.unit?.unit === 'ft' &&
    /^(?:draws|sets)$/.test(line.word(draft.from - 1))
  )
    if (draft.unitFrom === 'implied' && draft.shape === 'mixed' && draft.d === 2)
      Object.assign(draft, { unit: before.unit, unitFrom: 'shared' });
  if (!goesOn || !near || draft.unitFrom !== 'implied' || draft.shape !== 'mixed' || draft.d > 4 || draft.group) return;
  for (let k = before.until; k < draft.from; k++)
    if (line.tokens[k]!.kind === 'break' || line.word(k) === '.' || /^(?:cut|wide|tall|measures?)$/.test(line.word(k)))
      return;
  draft.unit = null;
  draft.unitFrom = 'none';
}

/** What would be read if nothing were claimed: the weighing of bare numbers is learned from it. */
export function unclaimedDrafts(line: Line, tokens: readonly Token[]): Draft[] {
  const drafts = draftsIn(line, new Uint8Array(line.tokens.length));
  tie(line, drafts);
  const standing = correct(line, tokens, drafts);
  shareUnits(line, standing);
  return standing;
}

function draftsIn(line: Line, claimed: Uint8Array): Draft[] {
  const drafts: Draft[] = [];
  for (let i = 0; i < line.tokens.length; ) {
    const elbow = claimed[i] ? null : elbowAt(line, i);
    if (elbow) {
      i = elbow.until;
      continue;
    }
    const draft = claimed[i] || !line.mayCount(i) ? null : amountAt(line, i);
    const free = draft !== null && !claimed.subarray(i, draft.until).includes(1);
    if (free) drafts.push(draft);
    i = free ? draft.until : i + 1;
  }
  return drafts;
}

// Built field by field: a note has many readings, and each optional field spread in would cost an object.
function readingOf(
  draft: Draft,
  line: Line,
  all: readonly Token[],
  text: string,
  group: Quantity['group'] | null,
): Quantity {
  const { start } = line.tokens[draft.from]!;
  const { end } = line.tokens[draft.until - 1]!;
  const reading: Quantity = {
    start,
    end,
    from: line.place(draft.from),
    until: line.place(draft.until - 1) + 1,
    quote: text.slice(start, end),
    value: new Fraction(draft.n, draft.d),
    unit: draft.unit?.unit ?? null,
    unitKind: draft.unit?.kind ?? null,
    unitFrom: draft.unitFrom,
    rule: draft.rule,
  };
  if (group) reading.group = group;
  if (draft.tolerance) reading.tolerance = draft.tolerance;
  if (draft.bound) reading.bound = draft.bound;
  if (draft.onCenter) reading.onCenter = true;
  if (draft.per) reading.per = draft.per;
  if (draft.more) reading.more = true;
  if (draft.doubt) reading.doubt = draft.doubt;
  if (draft.instead) {
    reading.takenBackFrom = all[draft.instead[0]!.from]!.start;
    reading.replaces = draft.instead;
  }
  return reading;
}

function setAside(claim: PlacedClaim, line: Line, text: string): NotQuantity {
  const { start } = line.tokens[claim.from]!;
  const { end } = line.tokens[claim.until - 1]!;
  const aside: NotQuantity = {
    start,
    end,
    from: line.place(claim.from),
    until: line.place(claim.until - 1) + 1,
    kind: claim.kind,
    quote: text.slice(start, end),
  };
  if (claim.value) aside.value = claim.value;
  return aside;
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
