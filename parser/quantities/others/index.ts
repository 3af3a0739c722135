import type { Line } from '../line.ts';
import { date, ordinal, year } from './calendar.ts';
import type { Claim, ClaimRule } from './claim.ts';
import { clock } from './clock.ts';
import { idiom } from './idioms.ts';
import { address, code, label } from './labels.ts';
import { money } from './money.ts';
import { one } from './one.ts';
import { phone } from './phone.ts';

/** Asked in this order; the first that claims the words has them. */
const RULES: readonly ClaimRule[] = [phone, idiom, one, money, clock, address, ordinal, date, year, code, label];

/** What looks like a number and counts nothing. Claimed before any quantity is read. */
export function claimsIn(line: Line): (Claim & { from: number })[] {
  const claims: (Claim & { from: number })[] = [];
  for (let i = 0; i < line.tokens.length; ) {
    const claim = claimAt(line, i);
    if (claim) claims.push({ from: i, ...claim });
    i = claim ? claim.until : i + 1;
  }
  return claims;
}

function claimAt(line: Line, i: number): Claim | null {
  if (line.tokens[i]!.kind === 'break') return null;
  for (const rule of RULES) {
    const claim = rule(line, i);
    if (claim) return claim;
  }
  return null;
}
