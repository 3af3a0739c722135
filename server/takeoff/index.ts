import { cautionsIn } from './cautions.ts';
import { reckonGoods } from './reading/covering.ts';
import type { Computed, NoteFacts, SiteFacts } from './types.ts';

/** What the notes of a job let the trade reckon: goods by area, waits, checks and cautions. Pure. */
export function compute(notes: readonly NoteFacts[], site: SiteFacts): Computed {
  const { lines, questions } = reckonGoods(notes, site);
  return { lines, checks: [], waits: [], cautions: cautionsIn(notes, site), questions };
}
