import type { Draft } from './draft.ts';
import { inchesBehind } from './feet.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import { unitAt } from './unitAt.ts';
import { unitNamed } from './units.ts';

/** An amount with what is said behind its unit of the next smaller one: inches, centimetres, ounces, or a part. */
export const withSmaller = (line: Line, draft: Draft): Draft =>
  partBehind(line, ouncesBehind(line, centimetresBehind(line, inchesBehind(line, draft))));

/** `1m20`: the metres and their centimetres in one word. */
export function metresTied(line: Line, i: number): Draft | null {
  const whole = line.tokens[i]!;
  const tied = line.tight(i + 1) ? /^m(\d\d)$/.exec(line.word(i + 1)) : null;
  if (!tied || !/^\d{1,2}$/.test(whole.text)) return null;
  const n = Number(whole.text) * 100 + Number(tied[1]);
  const unit = unitNamed('m');
  return {
    n,
    d: 100,
    from: i,
    until: i + 2,
    unit,
    unitFrom: 'said',
    shape: 'mixed',
    inWords: false,
    rule: 'quantity/metres',
  };
}

/** "Two foot and a half", "two gallons and a half": a part behind the unit. */
function partBehind(line: Line, draft: Draft): Draft {
  if (draft.d !== 1 || !/^(?:and|y|&)$/.test(line.word(draft.until)) || draft.unit?.kind === 'pressure') return draft;
  // "2 inch and a 1/4".
  const written = line.word(draft.until + 1) === 'a' && line.tokens[draft.until + 2]?.kind === 'number';
  const part = line.number(draft.until + (written ? 2 : 1));
  const digits = part?.shape === 'fraction' && !part.inWords && draft.unit?.unit === 'in';
  if (part?.shape !== 'fraction' || !(part.inWords || digits) || unitAt(line, part.until, part)) return draft;
  if (!digits && !endsPhrase(line, part.until)) return draft;
  if (part.d > 2 && draft.unit?.unit !== 'in') return draft;
  if (part.n === 1 && !digits && !/^(?:a|one|half|medio|media)$/.test(line.word(draft.until + 1))) return draft;
  return { ...draft, n: draft.n * part.d + part.n, d: part.d, until: part.until, shape: 'mixed' };
}

/** Behind "three metres six" a single figure is tenths only where the length ends; elsewhere it may count something. */
const CLOSES_LENGTH = /^(?:|[.,;]|by|x|and|long|wide|high|tall|deep|but|so)$/;

/** "Five metres sixty", "three metres one hundred": the centimetres, or from a hundred on the millimetres, said bare behind the metres; tenths up to nine. */
function centimetresBehind(line: Line, draft: Draft): Draft {
  if (draft.unit?.unit !== 'm' || draft.d !== 1) return draft;
  const part = line.number(draft.until);
  const bare = part?.shape === 'whole' && !part.article && part.n > 1 && part.n < (draft.inWords ? 1000 : 100);
  if (!bare || unitAt(line, part.until, part)) return draft;
  // "Fourteen metre thirty near enough": only what it would count, "two metre forty screws", leaves the metres whole.
  const counted = [0, 1].some((k) => /[^s']s$/.test(line.word(part.until + k)));
  if (!endsPhrase(line, part.until) && (counted || part.n < 10 || !draft.inWords)) return draft;
  if (part.n < 10 && !(draft.inWords && CLOSES_LENGTH.test(line.word(part.until)))) return draft;
  const d = part.n < 10 ? 10 : part.n < 100 ? 100 : 1000;
  return { ...draft, n: draft.n * d + part.n, d, until: part.until, shape: 'mixed' };
}

/** "1lb 6oz", "six pound four ounces": one weight. */
function ouncesBehind(line: Line, draft: Draft): Draft {
  if (draft.unit?.unit !== 'lb' || draft.d !== 1) return draft;
  const ounces = line.number(line.word(draft.until) === ',' ? draft.until + 1 : draft.until);
  const said = ounces && !ounces.article && ounces.n < 16 * ounces.d ? unitAt(line, ounces.until, ounces) : null;
  if (!ounces || said?.unit.unit !== 'oz') return draft;
  const n = draft.n * 16 * ounces.d + ounces.n;
  return { ...draft, n, d: 16 * ounces.d, until: said.until, shape: 'mixed', rule: 'quantity/pounds-ounces' };
}
