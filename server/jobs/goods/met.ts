import Fraction from 'fraction.js';
import { isSpoiled } from '../../../parser/facts/flaws/spoiled.ts';
import { stem, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Material } from '../../../parser/types.ts';
import { event } from '../event.ts';
import type { Ledger } from '../ledger.ts';
import type { Standing } from '../list/board.ts';
import { tell } from '../list/items.ts';
import { isLive } from '../live.ts';
import { leadOf, type Meeting } from '../meeting.ts';
import { fixedBy } from '../sieve.ts';
import type { Entry } from '../types.ts';
import { findGoods } from './found.ts';
import { isColour } from './kinds.ts';
import { onHandOf, openNeed } from './left.ts';
import type { Position } from './position.ts';
import { meetMaterial } from './stated.ts';

/** "Two pieces", "a can and a half": of the goods that come so, else of the thing just spoken of. */
export function packsOf({ ledger, met }: Meeting, fact: Material): Material | null {
  const known = ledger.goods.all.findLast((p) => p.unit === fact.unit && fact.unit !== 'each' && !p.dropped);
  if (known) return { ...fact, item: known.item, size: fact.size ?? known.size };
  const thing = met.at(-1)?.thing;
  return thing && fact.status === 'need' ? { ...fact, item: stemless(thing, met.at(-1)!.area) } : null;
}

/**
 * "Screen door closer is shot, one black": of the thing just spoken of, and of what kind it is to be. "A quart of the grey" is
 * called by its colour, since no thing comes by the quart; so is "four of the brown ones" where nothing was spoken of.
 */
export function kindOf({ met }: Meeting, fact: Material): Material | null {
  const last = met.at(-1);
  if (fact.status !== 'need') return fact;
  const pieces = fact.unit === null || fact.unit === 'each';
  if (isColour(fact.item) && (!pieces || !last?.thing)) return { ...fact, item: fact.item.replace(/ ones?$/, '') };
  return last?.thing ? { ...fact, item: stemless(last.thing, last.area), specs: [...fact.specs, fact.item] } : null;
}

/** "Dishwasher door gasket's torn, need one gasket": goods named in one word go by the fuller name of the flaw, where it was said so. */
export function inFull({ met, text }: Meeting, fact: Material): Material {
  const last = met.at(-1);
  if (fact.status !== 'need' || fact.item.includes(' ') || !last?.thing || !sameSentence(text, last, fact.start))
    return fact;
  const words = stemless(last.thing, last.area)
    .split(' ')
    .filter((word) => !isSpoiled(word));
  // "Three pavers by the step" are no step pavers.
  if (!text.toLowerCase().includes(words.join(' ').toLowerCase())) return fact;
  if (words.length < 2 || stem(words.at(-1)!) !== stem(fact.item)) return fact;
  return { ...fact, item: [...words.slice(0, -1), fact.item].join(' ') };
}

/** A thing without its room: `laundry baseboard` in the laundry room is `baseboard`. */
const stemless = (thing: string, area: string | null) =>
  thing
    .split(' ')
    .filter((word) => area === null || !area.toLowerCase().split(' ').includes(word.toLowerCase()))
    .join(' ') || thing;

export function takeGoods({ ledger, entry, text, day, met }: Meeting, position: Position, fact: Material): boolean {
  const had = fact.status === 'have' && openNeed(position);
  const short = /^[^.;!?\n]*\b(?:we're|i'm|still) short\b/i.test(text.slice(fact.end)) ? ' short' : '';
  meetMaterial(position, fact, entry, leadOf(text, 0, fact.start) + short);
  if (fact.status === 'bought' || had) day.bought.push(`${fact.quantity ?? ''} ${fact.item}`.trim());
  // "It has no ground so that gets a gfci": the part is tied to the flaw of the same sentence.
  const item = met.at(-1);
  if (fact.status === 'need' && item && sameSentence(text, item, fact.start)) {
    if (isLive(item)) tell(ledger.board, item, fact.item);
    tellUse(position, item);
  }
  return false;
}

/** So many words name goods fully. */
const FULL = 3;

/** "Exit sign is dark, need a 6 volt battery": what the battery is for, where its own name does not say it. */
function tellUse({ words, uses }: Position, { thing, area }: Standing): void {
  const use = thing && stemless(thing, area);
  if (!use || words.size > FULL || uses.includes(use) || [...wordsOf(use)].every((word) => words.has(word))) return;
  uses.push(use);
}

function sameSentence(text: string, item: Standing, start: number): boolean {
  const quote = item.history.at(-1)?.words;
  const at = quote ? text.indexOf(quote) : -1;
  return at >= 0 && at <= start && !/[.;!?\n]\s/.test(text.slice(at, start));
}

/** "Dimmer's in", with no buying told: what was put in was there, so it is not to buy. */
export function putIn({ ledger, entry }: Meeting, task: string, quote: string): void {
  // "Both gfis are in and tested".
  const goods = fixedBy(task) ?? (IN_PLACE.test(quote.toLowerCase()) ? task.split(' ').slice(1).join(' ') : null);
  if (!goods) return;
  const position = findGoods(ledger.goods, { item: goods, size: null, specs: [], unit: null, status: 'used' });
  if (!position || !openNeed(position) || position.bought.compare(0) > 0 || position.need === null) return;
  const count = Number(/\b(\d+)\b/.exec(quote)?.[1] ?? Number.NaN);
  const rest = position.need.sub(position.have);
  const stock = onHandOf(position);
  if (Number.isNaN(count) && stock.compare(0) > 0) return;
  const put = Number.isNaN(count) || rest.compare(count) < 0 ? rest : new Fraction(count);
  position.used = position.used.add(put);
  // What the stock does not hold was there all the same.
  if (put.compare(stock) > 0) position.have = position.have.add(put.sub(stock));
  position.reasons.push(`put in ${entry.at.slice(0, 10)}`);
  position.history.push(event(entry, 'used', quote));
}

const IN_PLACE =
  /(?:'s|'re|\bis|\bare) (?:both |all |now |already )*in\b(?! (?:the|his|my|her) (?:way|van|truck|shop|bin|skip))/;

/** "Make it three", "make that thirteen on the casing", a note of its own: the count of the goods named, else of the last. */
export function made(ledger: Ledger, entry: Entry, to: string | null, text: string): boolean {
  const count = /^make (?:it|that|them)\b/i.test(text.trim())
    ? /^(\d+|[a-z]+(?:[- ](?:one|two|three|four|five|six|seven|eight|nine)\b)?)/i.exec(to ?? '')?.[1]
    : undefined;
  const number = count === undefined ? -1 : /^\d+$/.test(count) ? Number(count) : spokenCount(count.toLowerCase());
  const wanted = ledger.goods.all.filter((p) => p.need !== null && !p.dropped);
  const named = [...wordsOf((to ?? '').slice(count?.length ?? 0))];
  const position = wanted.findLast((p) => named.some((word) => p.words.has(word))) ?? wanted.at(-1);
  if (number < 1 || !position) return false;
  position.reasons.push(`${position.need!.toFraction(true)} made ${number} ${entry.at.slice(0, 10)}`);
  position.need = new Fraction(number);
  position.wanted &&= { ...position.wanted, at: entry.at };
  position.history.push(event(entry, 'need', text));
  return false;
}

const COUNTS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** -1 for what is no number under a hundred. */
function spokenCount(words: string): number {
  const [tens = '', ones] = words.split(/[- ]/);
  if (!TENS.includes(tens)) return COUNTS.indexOf(words);
  return (TENS.indexOf(tens) + 2) * 10 + (ones ? COUNTS.indexOf(ones) : 0);
}
