import type Fraction from 'fraction.js';
import { coverageOf } from './coverage.ts';
import { packsOf } from './packSizes.ts';
import type { PacksTold, Ratio } from './ratios.ts';
import { figureAt, type Said, saying } from './said.ts';
import { wasteIn, wasteOf } from './waste.ts';

/** What a note says about how goods are sold. */
export interface Terms extends PacksTold {
  /** `0.1`; null where none was said. */
  waste: Fraction | null;
  /** The goods that the waste was said of, in a word: "10 % on board only"; null where it serves all. */
  wasteOf: string | null;
  coats: { value: number; at: number }[];
  /** Sold by its own measure: "by the foot", "by the square foot". */
  byMeasure: 'ft' | 'sq ft' | 'sq yd' | 'square' | 'cu yd' | null;
}

const COVERS_BOTH = /\{A\d+\} (?:for |in |with |at )?(?:the|both|all) $/;

/** Reads packs, coverage, waste and coats out of a note. */
export function termsIn(said: Said, used = new Set<number>()): Terms {
  const out: Terms = {
    ratios: [],
    waste: null,
    wasteOf: null,
    coats: [],
    packSize: null,
    roll: null,
    byMeasure: measureIn(said.words),
    sold: new Set(),
    used,
  };
  packsOf(said, out);
  coverageOf(said, out);
  out.ratios = asCorrected(out.ratios, said.words);
  out.waste = wasteIn(said, out.used);
  out.wasteOf = out.waste === null ? null : wasteOf(said.words);
  for (const match of said.words.matchAll(saying('<C>', 'g'))) {
    const figure = figureAt(said, match[1]);
    // "A bag does 10 m2 the two coats": both are in what it covers.
    if (figure.unit !== 'coat' || COVERS_BOTH.test(said.words.slice(0, match.index))) continue;
    out.coats.push({ value: figure.value.valueOf(), at: match.index });
    out.used.add(Number(match[1]));
  }
  // "Two times paint".
  const times = saying('<NC> times (?:paint(?:ed)?|coat(?:ed)?)\\b').exec(said.words);
  if (times) {
    out.coats.push({ value: figureAt(said, times[1]).value.valueOf(), at: times.index });
    out.used.add(Number(times[1]));
  }
  const single = /\b(?:single|one) coat\b/.exec(said.words);
  if (single) out.coats.push({ value: 1, at: single.index });
  return out;
}

const TAKEN_BACK = /\b(?:scratch that|no wait|wait no|i mean|make that|correction|sorry|actually|no,|rather)\b/;

/** "5 square foot a crate... scratch that, 10 a crate": of two sayings of one pack the one put right stands. */
const asCorrected = (ratios: readonly Ratio[], words: string): Ratio[] =>
  ratios.filter(
    (old) =>
      !ratios.some(
        (now) =>
          now.per === old.per &&
          now.unit === old.unit &&
          now.at > old.at &&
          !now.value.equals(old.value) &&
          TAKEN_BACK.test(words.slice(old.at, now.at)),
      ),
  );

/** "Sold by the foot", "they price it by the square foot". */
function measureIn(words: string): Terms['byMeasure'] {
  if (/\bby the (?:sq(?:uare)?\.? ?(?:yd|yard))\b/.test(words)) return 'sq yd';
  if (/\bby the square\b(?! (?:foot|feet|ft|yard|met(?:er|re)))/.test(words)) return 'square';
  const m = /\bby the (?:(sq(?:uare)?\.? ?(?:ft|foot|feet)|sqft)|(?:linear |lineal |running )?(?:foot|ft))\b/.exec(
    words,
  );
  if (!m) return /\bby the (?:cubic )?yard\b|\b(?:in|how many) yards\b|\byards,? please\b/.test(words) ? 'cu yd' : null;
  return m[1] ? 'sq ft' : 'ft';
}
