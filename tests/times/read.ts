import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { readTimes } from '../../parser/times/index.ts';

/** A wednesday afternoon. */
export const NOW = '2026-04-15T15:20:00';

export function timesOf(text: string, now = NOW) {
  const tokens = tokenise(text);
  return readTimes(tokens, text, { now, quantities: readQuantities(tokens, text).quantities });
}
