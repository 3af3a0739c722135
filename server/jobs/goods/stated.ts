/** One statement about goods is counted into what stands of them. */
import Fraction from 'fraction.js';
import type { Material, MaterialStatus } from '../../../parser/types.ts';
import { event } from '../event.ts';
import { noteOf } from '../history.ts';
import type { Entry } from '../types.ts';
import { amountOf, amountText, least, most, NONE, positive } from './amounts.ts';
import { sameUnit } from './found.ts';
import { covered, onHandOf, openNeed, toBuy } from './left.ts';
import { takeNeed } from './needed.ts';
import { countByPiece, takePacks } from './packsGot.ts';
import type { Position } from './position.ts';

/**
 * Counts a statement in, with its reason and its words.
 *
 * @param lead the words of the sentence before the goods, lower case
 */
export function meetMaterial(position: Position, fact: Material, entry: Entry, lead: string): void {
  const amount = fact.exact ? amountOf(fact.exact) : fact.quantity !== null ? new Fraction(fact.quantity) : null;
  const status = fetched(position, fact, lead) ? 'bought' : fact.status;
  const beside =
    /\b(?:and|plus|&) $/.test(lead) && position.history.some((e) => e.entry === entry.id && e.what === 'need');
  position.history.push(event(entry, status, fact.quote));
  if (status === 'mentioned') return;
  const noteId = noteOf(entry);
  countByPiece(position, fact, noteId);
  const told = { still: /\b(?:still|short)\b/.test(lead), only: ONLY.test(lead), beside };
  const reason = takePacks(position, status, fact.unit, amount, noteId)
    ? `${amountText(amount!, fact.unit)} ${status === 'have' ? 'on hand' : status}`
    : status === 'need'
      ? takeNeed(position, fact, amount, entry.at, told)
      : takeFate(position, status, amount, fact.unit);
  if (reason) position.reasons.push(`${reason} ${entry.at.slice(0, 10)}`);
  // What went back is asked for anew.
  if (status === 'returned' && position.wanted && openNeed(position))
    position.wanted = { ...position.wanted, at: entry.at };
}

/** "Only need one knob", "we just want the": right before the count. */
const ONLY =
  /\b(?:only|just)(?: really| actually)? (?:need|needs|want|wants|get|order|buy|going to need|gonna need)(?: the)? $|\bneed (?:only|just)(?: the)? $/;

/**
 * Takes in what became of goods: bought, ordered, used, taken back, or there.
 *
 * @returns what the order tells of it; null where it counts nothing
 */
function takeFate(
  position: Position,
  status: Exclude<MaterialStatus, 'need' | 'mentioned'>,
  amount: Fraction | null,
  unit: string | null,
): string | null {
  // A foot of what comes by the roll, a sheet of what was counted in feet: how much of it is not known.
  const known = amount !== null && sameUnit(position.unit, unit);
  const rest = known ? null : toBuy(position);
  const count = known ? amount : rest !== null && rest.compare(0) > 0 && amount === null ? rest : new Fraction(1);
  switch (status) {
    case 'bought':
      if (known || position.need !== null) {
        position.bought = position.bought.add(known || amount === null ? count : (rest ?? count));
        position.ordered = position.need
          ? positive(least(position.ordered, position.need.sub(covered(position))))
          : NONE;
      } else position.met = true;
      return `${amount ? amountText(amount, unit) : count.toFraction(true)} bought`;
    case 'ordered':
      position.ordered = position.ordered.add(known ? amount : (rest ?? count));
      if (position.need === null) position.met = true;
      return `${known ? `${amountText(amount, unit)} ` : ''}ordered`;
    case 'used':
      if (!known && amount !== null) return null;
      position.used = position.used.add(known ? amount : most(onHandOf(position), new Fraction(1)));
      // What was used was there.
      position.have = most(position.have, position.used.add(position.returned).sub(position.bought));
      return `${known ? amountText(amount, unit) : 'all'} used`;
    case 'returned':
      position.returned = position.returned.add(count);
      return `${amountText(count, unit)} taken back`;
    case 'have':
      // What is said to be on hand is counted, whatever was bought and used before.
      if (known) recount(position, amount);
      else if (position.need !== null) position.met = true;
      return `${amount ? amountText(amount, unit) : 'some'} on hand`;
  }
}

/** So much is there: what is missing of what was had or bought is used up, what is more was there before. */
function recount(position: Position, amount: Fraction): void {
  const short = onHandOf(position).sub(amount);
  if (short.compare(0) > 0) position.used = position.used.add(short);
  else position.have = position.have.sub(short);
}

/** "Got the two hoses" tells of buying where hoses were wanted; "got a board at the shop" tells of stock. */
const fetched = (position: Position, fact: Material, lead: string) =>
  fact.status === 'have' &&
  openNeed(position) &&
  /(?:^|[^'e] )got\b/.test(lead) &&
  !/\b(?:left|still|half|extra|spare|on hand|back at|at the shop|in the (?:van|truck)|on the truck)\b/.test(
    lead + fact.quote,
  );
