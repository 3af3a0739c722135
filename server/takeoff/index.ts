import { cautionsIn } from './cautions.ts';
import { checksIn } from './checks/index.ts';
import { cutLines } from './cutlist/index.ts';
import { reckonGoods } from './reading/covering.ts';
import { layOut } from './reading/said.ts';
import type { Computed, NoteFacts, SiteFacts } from './types.ts';
import { waitsIn } from './waits.ts';

/** What the notes of a job let the trade reckon: goods by extent, cut lists, waits, checks and cautions. Pure. */
export function compute(notes: readonly NoteFacts[], site: SiteFacts): Computed {
  const said = layOut(notes, site);
  const goods = reckonGoods(said);
  const cuts = cutLines(said);
  return {
    lines: [...goods.lines, ...cuts.lines],
    checks: checksIn(said),
    waits: waitsIn(said),
    cautions: cautionsIn(notes, site),
    questions: [...goods.questions, ...cuts.questions],
  };
}
