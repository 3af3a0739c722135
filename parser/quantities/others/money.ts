import Fraction from 'fraction.js';
import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import type { SaidNumber } from '../saidNumber.ts';
import { unitAt } from '../unitAt.ts';
import { unitNamed } from '../units.ts';
import { wordSet } from '../words.ts';
import type { Claim, ClaimRule } from './claim.ts';

const CURRENCY = wordSet('dollar dollars buck bucks cent cents quid euro euros usd peso pesos grand');
const THOUSANDS = wordSet('k grand');
const PAYING = wordSet(
  'paid pay cost costs spent charged charging charges billed fee price bill invoice budget quote quoted ran permit deposit rental rent deductible estimate fine fined toll owe owes owed bet tipped',
);

/** $385, "sixty two bucks", "the fee was one fifty", "cost me eighty five". */
export const money: ClaimRule = (line, i) => {
  // "A buck fifty" is 150 of something or 1.50: kept aside, with no sum.
  if (line.word(i) === 'a' && line.word(i + 1) === 'buck' && line.number(i + 2))
    return { until: line.number(i + 2)!.until, kind: 'money' };
  // "A grand and a half", "a couple hundred bucks": so much that no sum is certain.
  if (line.word(i) === 'a' && line.word(i + 1) === 'grand' && line.word(i + 2) === 'and' && line.number(i + 3))
    return { until: line.number(i + 3)!.until, kind: 'money' };
  const couple = line.word(i + 1) === 'couple' ? i + 2 : line.word(i) === 'couple' ? i + 1 : 0;
  if (couple) {
    const k = line.word(couple) === 'of' ? couple + 1 : couple;
    const scale = /^(?:hundred|thousand|grand)$/.test(line.word(k)) ? k + 1 : k;
    if (CURRENCY.has(line.word(scale))) return { until: scale + 1, kind: 'money' };
    if (line.word(k) === 'grand') return { until: k + 1, kind: 'money' };
  }
  // "Dollar eighty a foot".
  const coined = line.word(i - 1) === 'dollar' ? line.number(i) : null;
  if (coined && !coined.article) return { until: pastRate(line, coined.until), kind: 'money' };
  const signed = /^[$£€]$/.test(line.tokens[i]!.text);
  const number = line.number(signed ? i + 1 : i);
  if (!number || number.article) return null;
  const next = line.word(number.until);
  const thousands =
    THOUSANDS.has(next) &&
    number.n < 1_000_000 * number.d &&
    number.shape !== 'fraction' &&
    !/^(?:btus?|btuh|lumens?|kelvin|cfm|ohms?)$/.test(line.word(number.until + 1)) &&
    ![1, 2, 3].some((back) => /^(?:sensor|ohms|resistance|thermistor|probe|winding)$/.test(line.word(i - back))) &&
    (next === 'grand' || line.tight(number.until) || number.inWords);
  if (signed) return sum(number, pastRate(line, thousands ? number.until + 1 : number.until), thousands);
  // "Eight or nine hundred bucks".
  const other = /^(?:or|to|-)$/.test(next) ? line.number(number.until + 1) : null;
  if (other && CURRENCY.has(line.word(other.until))) return { until: other.until + 1, kind: 'money' };
  if (CURRENCY.has(next) || thousands) return sum(number, pastRate(line, number.until + 1), thousands);
  // "30% deposit", "gst is ten percent": of a bill.
  const percent = /^(?:percent|%)$/.test(next) ? number.until + 1 : 0;
  if (
    percent &&
    (OF_BILLS.has(line.word(percent)) ||
      (/^(?:is|at|was|of)$/.test(line.word(i - 1)) && OF_BILLS.has(line.word(i - 2))))
  )
    return { until: percent, kind: 'money' };
  // "Cost is up nine percent since june".
  if (percent && isPriced(line, i)) return { until: percent, kind: 'money' };
  // "He wants 40 an hour": a wage, or a pace; either way nobody counts it.
  if (
    /^(?:a|an|per)$/.test(next) &&
    /^(?:hour|hr|day|week)$/.test(line.word(number.until + 1)) &&
    number.n >= 10 * number.d
  )
    return sum(number, number.until + 2, false);
  const changed = next === 'and' && line.word(number.until + 1) === 'change' && endsPhrase(line, number.until + 2);
  if (changed && [2, 3, 4, 5, 6].some((back) => BILLED.test(line.word(i - back))))
    return sum(number, number.until + 2, false);
  if (isAsked(line, i, number)) return sum(number, pastRate(line, number.until), false);
  if (![1, 2, 3].some((back) => PAYING.has(line.bare(i - back))) && !isBid(line, i)) return null;
  // "Eighty pounds on it" is a load; pounds are money only where somebody paid them.
  const ounces = line.number(number.until + 1);
  if (ounces && unitAt(line, ounces.until, ounces)?.unit.unit === 'oz') return null;
  if (next === 'pounds' || next === 'pound') return sum(number, number.until + 1, false);
  if (number.shape === 'fraction' || (line.tokens[number.until]?.kind === 'word' && !NO_GOODS.has(next))) return null;
  return unitAt(line, number.until, number) ? null : sum(number, number.until, false);
};

/** "Four bucks a foot": the foot is no length. */
const pastRate = (line: Line, at: number) =>
  /^(?:a|an|per)$/.test(line.word(at)) && unitNamed(line.word(at + 1)) ? at + 2 : at;

/** "Ninety five a pop", "four eighty for the lot", "got him down to six fifty", "eighteen hundred up front": bargained. */
function isAsked(line: Line, i: number, number: SaidNumber): boolean {
  if (number.shape === 'fraction' || unitAt(line, number.until, number)) return false;
  const [next, after, last] = [0, 1, 2].map((k) => line.word(number.until + k));
  if (next === 'a' && /^(?:pop|head|throw|go|month|unit)$/.test(after!)) return true;
  if (next === 'up' && after === 'front') return true;
  // "Sixteen a foot", "one fifty a square": so many of nothing are a price.
  if (
    next === 'a' &&
    number.shape === 'whole' &&
    number.n >= 10 &&
    /^(?:length|area)$/.test(unitNamed(after!)?.kind ?? '')
  )
    return true;
  // "4.29 a gal": in dollars and cents, and no gallon.
  const cents = number.shape === 'decimal' && number.d === 100 && !number.inWords;
  if (next === 'a' && cents && /^(?:length|area|volume|weight)$/.test(unitNamed(after!)?.kind ?? '')) return true;
  if (line.word(i - 1) === 'asking' && endsPhrase(line, number.until)) return true;
  const given =
    /^(?:gave|give|slipped|handed|owe|owes)$/.test(line.word(i - 2)) && /^(?:him|her|them|me)$/.test(line.word(i - 1));
  if (given && number.n >= 20 && next !== 'of' && endsPhrase(line, number.until)) return true;
  const bought =
    line.word(i - 1) === 'for' &&
    /^(?:it|them|that|this|him|her)$/.test(line.word(i - 2)) &&
    /^(?:got|bought|sold|had|get|wants|wanted|want|do|did|done|doing)$/.test(line.word(i - 3));
  // "That'll set you back a good four hundred".
  const costly =
    number.n >= 10 && endsPhrase(line, number.until) && [1, 2, 3].some((back) => line.word(i - back) === 'back');
  if (costly && [2, 3, 4, 5].some((back) => SETS.test(line.word(i - back)) && US.test(line.word(i - back + 1))))
    return true;
  if (bought && number.n > 4 && endsPhrase(line, number.until)) return true;
  if (/^(?:knocked|beat|talked)$/.test(line.word(i - 3)) && line.word(i - 1) === 'down') return true;
  if (next === 'for' && after === 'the' && /^(?:lot|job|whole|day|pair)$/.test(last!)) return isBargained(line, i);
  return false;
}

const SETS = /^(?:set|sets|setting)$/;
const US = /^(?:me|you|us|him|her|them)$/;

const OF_BILLS = wordSet(
  'tip inflation raise deposit off discount markup mark-up retention retainage vat gst tax hst pst interest commission',
);

const PRICED = wordSet(
  'cost costs price prices lumber rate rates mortgage loan sales inflation gas diesel copper insurance premium wages rent tariff tariffs stock shares market budget',
);

/** Priced within the same sentence: "it's 16 foot stock. 12 percent for miters" tells no price. */
function isPriced(line: Line, i: number): boolean {
  for (const back of [1, 2, 3, 4]) {
    if (/^[.;!?]$/.test(line.tokens[i - back]?.text ?? '')) return false;
    if (PRICED.has(line.bare(i - back))) return true;
  }
  return false;
}

const BILLED = /^(?:materials|labor|labour|bid|quote|job|bill|invoice|cost|costs|price|total|paid|truck)$/;

const BIDS = wordSet('bid bids quote quoted quotes estimate estimates tender price');

/** "The bid was under by six hundred", "his quote came in at four thousand two hundred". */
const isBid = (line: Line, i: number) =>
  (line.number(i)?.n ?? 0) >= LEAST_BID && [4, 5, 6].some((back) => BIDS.has(line.bare(i - back)));
const LEAST_BID = 100;

const isBargained = (line: Line, i: number) => [1, 2, 3, 4, 5].some((back) => BARGAIN.has(line.word(i - back)));
const BARGAIN = wordSet(
  'he she they him her them wants want wanted asked asking charge charges quoted price pay paid down knocked gave offered',
);

const NO_GOODS = wordSet('for in on to and so but the at total each apiece by cash upfront plus under over already');

function sum(number: SaidNumber, until: number, thousands: boolean): Claim {
  return {
    until: thousands ? Math.max(until, number.until + 1) : until,
    kind: 'money',
    value: new Fraction(number.n * (thousands ? 1000 : 1), number.d),
  };
}
