import type { Quantity, Token } from '../types.ts';
import type { Draft } from './index.ts';
import { type Unit, unitNamed } from './units.ts';

/** Ties neighbouring readings together: pairs, ranges, plus-or-minus, "on each of", rates; hedges around them. */
export function group(tokens: readonly Token[], drafts: Draft[]): Draft[] {
  let id = 0;
  for (let i = 0; i < drafts.length; i++) {
    const chain = chainFrom(tokens, drafts, i);
    if (chain) {
      id++;
      const members = drafts.slice(i, i + chain.size);
      members.forEach((m, index) => {
        m.group = { kind: chain.kind, id, index, size: chain.size };
      });
      share(members);
      i += chain.size - 1;
    }
  }
  spread(tokens, drafts);
  for (const draft of drafts) hedge(tokens, draft);
  return rates(tokens, drafts);
}

function between(tokens: readonly Token[], a: Draft, b: Draft): string {
  return tokens
    .slice(a.until, b.from)
    .filter((t) => !t.skip)
    .map((t) => t.word)
    .join(' ');
}

function chainFrom(
  tokens: readonly Token[],
  drafts: readonly Draft[],
  i: number,
): { kind: 'pair' | 'range'; size: number } | null {
  const a = drafts[i]!;
  const b = drafts[i + 1];
  if (!b) return null;
  const joint = between(tokens, a, b);
  if (/^(?:(?:wide|long|tall|high|deep) )?(?:by|x|×)(?: (?:a|about))?$/.test(joint)) {
    const c = drafts[i + 2];
    return { kind: 'pair', size: c && /^(?:by|x|×)$/.test(between(tokens, b, c)) ? 3 : 2 };
  }
  if (
    /^(?:to|-|–|or|maybe|through|till)$/.test(joint) &&
    sameKind(a, b) &&
    a.n / a.d < b.n / b.d &&
    (joint !== '-' || !tokens[a.until]!.spaced)
  )
    return { kind: 'range', size: 2 };
  if (joint === 'and' && tokens[a.from - 1]?.word === 'between' && sameKind(a, b)) return { kind: 'range', size: 2 };
  return null;
}

const sameKind = (a: Draft, b: Draft) => a.unit === null || b.unit === null || a.unit.kind === b.unit.kind;

/** One unit said last, or first, covers the group. Feet first and a bare number after stay apart. */
function share(members: readonly Draft[]): void {
  const said =
    (members.findLast((m) => m.unitFrom === 'said') ?? members.find((m) => m.unitFrom === 'implied'))?.unit ?? null;
  if (!said) return;
  const last = members.at(-1)!;
  for (const m of members) {
    if (m.unitFrom === 'said' || (last.unitFrom !== 'said' && said.unit === 'ft')) continue;
    if (m.unitFrom === 'implied' && said.unit !== 'in') continue;
    m.unit = said;
    m.unitFrom = 'shared';
  }
}

/** "Two on each of the four windows": both stay, tied, for whoever multiplies them. */
function spread(tokens: readonly Token[], drafts: readonly Draft[]): void {
  drafts.forEach((a, i) => {
    const b = drafts[i + 1];
    if (!b || a.group || b.group || b.from - a.until > 8) return;
    if (/\b(?:each|every one) of (?:the |those |these |my |our )?$/.test(`${between(tokens, a, b)} `)) {
      a.group = { kind: 'eachOf', id: 10_000 + i, index: 0, size: 2 };
      b.group = { kind: 'eachOf', id: 10_000 + i, index: 1, size: 2 };
    }
  });
}

const BEFORE: readonly [RegExp, Quantity['bound']][] = [
  [/(?:^| )(?:about|around|roughly|maybe|like|approx|approximately|almost|nearly|close to|call it|~)$/, 'about'],
  [/(?:^| )(?:at most|no more than|not more than|max|maximum|up to|under|below|less than)$/, 'atMost'],
  [/(?:^| )(?:at least|no less than|min|minimum)$/, 'atLeast'],
  [/(?:^| )(?:over|above|more than|better than)$/, 'over'],
];

function hedge(tokens: readonly Token[], draft: Draft): void {
  const lead = tokens
    .slice(Math.max(0, draft.from - 3), draft.from)
    .filter((t) => t.kind === 'word' && !t.skip)
    .map((t) => t.word)
    .join(' ');
  for (const [pattern, bound] of BEFORE) if (pattern.test(lead)) draft.bound ??= bound;
  if (
    /(?:plus or minus|plus minus|\+\/-|give or take)(?: an?| one)?$/.test(lead) ||
    tokens[draft.from - 1]?.text === '±'
  )
    draft.group ??= { kind: 'plusMinus', id: 20_000 + draft.from, index: 0, size: 1 };
  const next = tokens[draft.until]?.word ?? '';
  if (/^(?:strong|heavy|full|plus)$/.test(next) || /(?:strong|heavy|full)$/.test(lead)) draft.tolerance = 'over';
  else if (/^(?:shy|light|scant|minus)$/.test(next) || /(?:hair under|shy|scant)$/.test(lead))
    draft.tolerance = 'under';
  else if (/hair over$/.test(lead)) draft.tolerance = 'over';
  const after = tokens
    .slice(draft.until, draft.until + 2)
    .map((t) => t.word)
    .join(' ');
  if (/^(?:on center|on centre|on centers|oc|o c|o\.c)/.test(after)) {
    draft.onCenter = true;
    if (!draft.unit) {
      draft.unit = unitNamed('in');
      draft.unitFrom = 'implied';
    }
  }
}

/** "Quarter inch per foot" is a slope; "11.5 square feet to the box" keeps what it is measured against. */
function rates(tokens: readonly Token[], drafts: readonly Draft[]): Draft[] {
  return drafts.map((draft) => {
    const [a, b, c] = [tokens[draft.until], tokens[draft.until + 1], tokens[draft.until + 2]];
    let at = -1;
    if (/^(?:per|\/|an?)$/.test(a?.word ?? '') && b?.kind === 'word') at = draft.until + 1;
    else if (
      (a?.word === 'to' || a?.word === 'in' || a?.word === 'on') &&
      /^(?:the|a)$/.test(b?.word ?? '') &&
      c?.kind === 'word'
    )
      at = draft.until + 2;
    if (at < 0 || !draft.unit) return draft;
    const per = unitNamed(tokens[at]!.word);
    if (!per || per.close) return draft;
    if (draft.unit.unit === 'in' && per.unit === 'ft' && a!.word !== 'to' && a!.word !== 'in') {
      const slope: Unit = { unit: 'in/ft', kind: 'slope', close: false };
      return { ...draft, unit: slope, until: at + 1, rule: 'quantity/slope' };
    }
    return per.kind === 'pack' || per.kind === 'count' || per.kind === 'volume' || per.kind === 'length'
      ? { ...draft, per: per.unit }
      : draft;
  });
}
