import type { TokenRange } from '../../types.ts';
import type { Line } from '../line.ts';
import { address } from './addresses.ts';
import { date, ordinal, year } from './calendar.ts';
import type { Claim, ClaimRule } from './claim.ts';
import { clock } from './clock.ts';
import { code } from './codes.ts';
import { folk } from './folk.ts';
import { score } from './games.ts';
import { articledHour, spanishHour, writtenHour } from './hours.ts';
import { idiom } from './idioms.ts';
import { juxtaposed } from './juxtaposed.ts';
import { keyed } from './keyed.ts';
import { label } from './labels.ts';
import { heading, listNumbers, spokenList } from './lists.ts';
import { money } from './money.ts';
import { namedAgain, numbered } from './numbered.ts';
import { one } from './one.ts';
import { age } from './people.ts';
import { phone } from './phone.ts';
import { row } from './rows.ts';
import { ofTalk } from './talk.ts';
import { thread } from './threads.ts';
import { talkedWhile } from './whiles.ts';

/** Asked in this order wherever a number can start, behind the set phrases; the first that claims the words has them. */
const RULES: readonly ClaimRule[] = [
  phone,
  keyed,
  one,
  money,
  age,
  folk,
  clock,
  articledHour,
  spanishHour,
  writtenHour,
  score,
  address,
  ordinal,
  date,
  year,
  code,
  heading,
  label,
  numbered,
  row,
  thread,
  juxtaposed,
  ofTalk,
  talkedWhile,
];

export interface PlacedClaim extends Claim {
  from: number;
}

/** What looks like a number and counts nothing, `names` among it. Claimed before any quantity is read. */
export function claimsIn(line: Line, names: readonly TokenRange[]): PlacedClaim[] {
  const claims: PlacedClaim[] = [];
  const named = new Map(names.map(({ from, until }) => [from, until]));
  const listed = new Set([...listNumbers(line), ...spokenList(line)]);
  for (let i = 0; i < line.tokens.length; ) {
    const name = named.get(i);
    const claim: Claim | null =
      name !== undefined || listed.has(i)
        ? { until: name ?? i + 1, kind: 'label' }
        : (claimAt(line, i) ?? namedAgain(line, i, claims.at(-1)));
    if (claim) claims.push({ from: i, ...claim });
    // "Seven point six two five": what stands behind the point is no name of its own.
    const pointed = !claim && (line.word(i) === 'point' || line.word(i + 1) === 'point');
    const decimal = pointed ? line.number(i) : null;
    i = claim ? claim.until : decimal?.shape === 'decimal' ? decimal.until : i + 1;
  }
  return claims;
}

function claimAt(line: Line, i: number): Claim | null {
  const phrase = idiom(line, i);
  if (phrase || !line.mayCount(i)) return phrase;
  for (const rule of RULES) {
    const claim = rule(line, i);
    if (claim) return claim;
  }
  return null;
}
