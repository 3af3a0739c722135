import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { SLOPE } from './slopes.ts';
import { unitNamed } from './units.ts';
import { wordSet } from './words.ts';

const ABOUT = wordSet('about around roughly maybe like approx approximately almost nearly ~ circa call');
const OVER = wordSet('strong heavy full fat plus proud');
const UNDER = wordSet('shy light scant minus weak skinny');

const BOUNDS: readonly [string, NonNullable<Draft['bound']>][] = [
  ['at most', 'atMost'],
  ['no more than', 'atMost'],
  ['not more than', 'atMost'],
  ['up to', 'atMost'],
  ['max', 'atMost'],
  ['maximum', 'atMost'],
  ['at least', 'atLeast'],
  ['no less than', 'atLeast'],
  ['not less than', 'atLeast'],
  ['minimum', 'atLeast'],
  ['min', 'atLeast'],
  ['less than', 'under'],
  ['under', 'under'],
  ['below', 'under'],
  ['more than', 'over'],
  ['better than', 'over'],
  ['over', 'over'],
  ['above', 'over'],
  ['close to', 'about'],
];
/** By their last word, so that one look tells most words apart. */
const BY_LAST = new Map<string, { words: string[]; bound: Draft['bound'] }[]>();
for (const [phrase, bound] of BOUNDS) {
  const words = phrase.split(' ');
  const last = words.at(-1)!;
  BY_LAST.set(last, [...(BY_LAST.get(last) ?? []), { words, bound }]);
}
const ENDINGS: ReadonlyMap<string, Draft['bound']> = new Map([
  ['max', 'atMost'],
  ['maximum', 'atMost'],
  ['tops', 'atMost'],
  ['minimum', 'atLeast'],
  ['ish', 'about'],
]);

/** What the words around a reading say of it: about, at most, strong, a hair under, on center, per foot. */
export function hedge(line: Line, draft: Draft): void {
  const bound = boundBefore(line, draft.from) ?? boundAfter(line, draft.until);
  if (bound) draft.bound = bound;
  onCenter(line, draft);
  if (draft.unit === null || draft.unit.kind === 'length') draft.tolerance ??= toleranceOf(line, draft);
  if (draft.tolerance === undefined) delete draft.tolerance;
  rate(line, draft);
}

function boundBefore(line: Line, from: number): Draft['bound'] {
  let at = from;
  if (/^(?:a|an|the|of)$/.test(line.word(at - 1))) at--;
  if (ABOUT.has(line.word(at - 1)) || (line.word(at - 2) === 'call' && line.word(at - 1) === 'it')) return 'about';
  const ending = BY_LAST.get(line.word(at - 1));
  return ending?.find(({ words }) => words.every((w, k) => line.word(at - words.length + k) === w))?.bound;
}

function boundAfter(line: Line, until: number): Draft['bound'] {
  if (line.word(until) === 'or') {
    if (line.word(until + 1) === 'so') return 'about';
    if (line.word(until + 1) === 'more' || line.word(until + 1) === 'better') return 'atLeast';
    if (line.word(until + 1) === 'less') return 'atMost';
  }
  return ENDINGS.get(line.word(until));
}

function toleranceOf(line: Line, draft: Draft): Draft['tolerance'] {
  const [before, next] = [line.word(draft.from - 1), line.word(draft.until)];
  const hair = /^(?:hair|tad|touch|just|smidge)$/.test(line.word(draft.from - 2));
  if (hair && /^(?:under|shy|below)$/.test(before)) return 'under';
  if (hair && /^(?:over|past|above)$/.test(before)) return 'over';
  if (next === 'plus' || next === 'minus') {
    const aHair = line.word(draft.until + 1) === 'a' && /^(?:hair|tad|touch)$/.test(line.word(draft.until + 2));
    if (!aHair && line.word(draft.until + 1) !== '' && line.word(draft.until + 1) !== '.') return undefined;
  }
  const ends = !/^(?:duty|of|gauge|coat)$/.test(line.word(draft.until + 1));
  if (ends && OVER.has(next)) return 'over';
  if (ends && UNDER.has(next)) return 'under';
  if (!/^(?:a|an)$/.test(line.word(draft.from - 2))) return undefined;
  return OVER.has(before) && before !== 'plus' ? 'over' : UNDER.has(before) && before !== 'minus' ? 'under' : undefined;
}

function onCenter(line: Line, draft: Draft): void {
  const [a, b, c] = [line.word(draft.until), line.word(draft.until + 1), line.word(draft.until + 2)];
  const said = (a === 'on' && /^cent(?:er|re)s?$/.test(b)) || a === 'oc' || a === 'centers' || a === 'centres';
  if (!said && !(a === 'o' && (b === 'c' || ((b === '.' || b === '/') && c === 'c')))) return;
  draft.onCenter = true;
  if (draft.unit) return;
  // Nobody spaces anything two hundred inches apart: those are millimetres.
  draft.unit = unitNamed(draft.n > MOST_INCHES * draft.d ? 'mm' : 'in');
  draft.unitFrom = 'implied';
}

const MOST_INCHES = 196;

/** "Two quarts of water a bag": where the unit that it is measured against stands, behind what is measured; else 0. */
function pastGoods(line: Line, draft: Draft): number {
  if (!/^(?:volume|weight)$/.test(draft.unit?.kind ?? '')) return 0;
  for (const k of [draft.until + 2, draft.until + 3])
    if (/^(?:a|per|to)$/.test(line.word(k)) && !/^(?:and|or|plus|with|in|,)$/.test(line.word(k - 1)))
      return [k + 1, k + 2].find((at) => unitNamed(line.word(at))?.kind === 'pack' && line.word(at - 1) !== 'to') ?? 0;
  return 0;
}

/** "Quarter inch per foot" is a slope; "11.5 square feet to the box" keeps what it is measured against. */
function rate(line: Line, draft: Draft): void {
  const [a, b] = [line.word(draft.until), line.word(draft.until + 1)];
  const direct =
    a === 'per' ||
    a === 'por' ||
    a === '/' ||
    a === 'a' ||
    a === 'an' ||
    a === 'every' ||
    (a === 'the' && b === 'foot');
  const of = a === 'of' ? pastGoods(line, draft) : 0;
  if (of) {
    draft.per = unitNamed(line.word(of))!.unit;
    return;
  }
  const each = (a === 'to' || a === 'in' || a === 'on') && (b === 'the' || b === 'a');
  if (!draft.unit || (!direct && !each)) return;
  const at = direct ? draft.until + 1 : draft.until + 2;
  const per = unitNamed(line.word(at));
  if (!per || (per.close && a !== 'per')) return;
  // "Cut at ten foot an inch and a quarter deep".
  if (line.word(at + 1) === 'and' && line.number(at + 2)?.shape === 'fraction') return;
  if (draft.unit.unit === 'in' && per.unit === 'ft' && (direct || a === 'to')) {
    draft.unit = SLOPE;
    draft.until = at + 1;
    draft.rule = 'quantity/slope';
  } else if (/^(?:pack|count|volume|length|area|time|weight)$/.test(per.kind) && a !== 'in' && a !== 'on')
    draft.per = per.unit;
  else if (per.kind === 'pack') draft.per = per.unit;
}
