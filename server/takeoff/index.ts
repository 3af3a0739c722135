import { cautionsIn, concerns } from './cautions/index.ts';
import { checksIn } from './checks/index.ts';
import { cutLines } from './cutlist/index.ts';
import { inOwnPacks } from './ownPacks.ts';
import { reckonGoods } from './reading/covering.ts';
import { layOut } from './reading/said.ts';
import { rowLines } from './rows/index.ts';
import type { Computed, NoteFacts, SiteFacts } from './types.ts';
import { waitsIn } from './waits/index.ts';

export { concerns };

/** What the notes of a job let the trade reckon: goods by extent, cut lists, waits, checks and cautions. Pure. */
export function compute(notes: readonly NoteFacts[], site: SiteFacts): Computed {
  const said = layOut(notes, site);
  const cuts = cutLines(said);
  const left = said.filter((note) => !cuts.claimed.has(note.noteId));
  const rows = rowLines(left);
  const goods = reckonGoods(left, rows.claimed);
  return {
    lines: inOwnPacks([...rows.lines, ...goods.lines, ...cuts.lines], site),
    checks: checksIn(said),
    waits: waitsIn(said),
    cautions: cautionsIn(notes, site),
    questions: [...rows.questions, ...goods.questions, ...cuts.questions],
  };
}
