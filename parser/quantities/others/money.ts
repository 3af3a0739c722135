import Fraction from 'fraction.js';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { Claim, ClaimRule } from './claim.ts';

const CURRENCY = wordSet('dollar dollars buck bucks cent cents quid euro euros usd peso pesos grand');
const THOUSANDS = wordSet('k grand');
const PAYING = wordSet('paid pay cost costs spent charged charging charges fee price bill invoice budget quoted ran');

/** $385, "sixty two bucks", "the fee was one fifty", "cost me eighty five". */
export const money: ClaimRule = (line, i) => {
  const signed = /^[$£€]$/.test(line.tokens[i]!.text);
  const number = line.number(signed ? i + 1 : i);
  if (!number || number.article) return null;
  const next = line.word(number.until);
  const grand = THOUSANDS.has(next) && (next === 'grand' || line.tight(number.until)) ? 1000 : 1;
  const claim = (until: number): Claim => ({ until, kind: 'money', value: new Fraction(number.n * grand, number.d) });
  if (signed) return claim(grand > 1 ? number.until + 1 : number.until);
  if (CURRENCY.has(next)) return claim(number.until + 1);
  if (grand > 1 && number.shape !== 'fraction') return claim(number.until + 1);
  const paid = [i - 1, i - 2, i - 3].some((k) => PAYING.has(line.word(k)));
  if (!paid) return null;
  // "Eighty pounds on it" is a load; pounds are money only where somebody paid them.
  if (next === 'pounds' || next === 'pound') return claim(number.until + 1);
  const counted = unitAt(line, number.until, number) !== null || number.shape === 'fraction';
  const noun =
    line.tokens[number.until]?.kind === 'word' && !/^(?:for|in|on|to|and|so|but|the|at|total|each|apiece)$/.test(next);
  return counted || noun ? null : claim(number.until);
};
