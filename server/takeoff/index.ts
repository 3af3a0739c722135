import { battLines } from './batts/index.ts';
import { cautionsIn, concerns, type DangerTold, dangersIn } from './cautions/index.ts';
import { checksIn } from './checks/index.ts';
import { cutLines } from './cutlist/index.ts';
import { conductorLines } from './each/conductors.ts';
import { fittingLines } from './each/fittings.ts';
import { perThingLines } from './each/index.ts';
import { firstOf, inPacks, packsSaid, packsThere } from './packs/index.ts';
import { reckonGoods } from './reading/covering.ts';
import { layOut } from './reading/layOut.ts';
import { placesCounted } from './reading/places.ts';
import { onlySold } from './reading/soldBy.ts';
import { unanswered } from './reading/unanswered.ts';
import { rowLines } from './rows/index.ts';
import type { Computed, ComputedLine, NoteFacts, SiteFacts } from './types.ts';
import { arrivalsIn } from './waits/arrivals.ts';
import { waitsIn } from './waits/index.ts';

export { concerns, type DangerTold, dangersIn };

/** What the notes of a job let the trade reckon: goods by extent, cut lists, waits, checks and cautions. Pure. */
export function compute(notes: readonly NoteFacts[], site: SiteFacts): Computed {
  const said = layOut(notes, site);
  const cuts = cutLines(said);
  const batts = battLines(said);
  const claimed = new Set([...cuts.claimed, ...batts.claimed]);
  const left = claimed.size ? said.filter((note) => !claimed.has(note.noteId)) : said;
  const rows = rowLines(left);
  const goods = reckonGoods(left, rows.claimed);
  const reckoned = [...rows.lines, ...goods.lines, ...cuts.lines, ...batts.lines];
  const small = perThingLines(said, reckoned, rows.standing);
  // What was said for each thing stands before what an area would take.
  const lines = [
    ...reckoned.filter((l) => !small.lines.some((s) => s.area === l.area && (s.item === l.item || isKindOf(l, s)))),
    ...small.lines,
    ...fittingLines(notes, said, reckoned),
    ...conductorLines(said, reckoned),
  ];
  const questions = [...rows.questions, ...goods.questions, ...cuts.questions, ...batts.questions, ...small.questions];
  const reckonedFrom = new Set([...reckoned.flatMap((l) => l.noteIds), ...questions.map((q) => q.noteId)]);
  const places = (reckonedFrom.size ? said : [])
    .filter(({ noteId }) => reckonedFrom.has(noteId))
    .flatMap((note) => placesCounted(note).map((thing) => ({ thing, noteId: note.noteId })));
  const packFor = firstOf(packsSaid(notes, said, lines), site.packFor);
  return {
    lines: packsThere(inPacks(lines, packFor), said),
    packFor,
    counted: [...small.counted, ...places, ...cuts.counted, ...onlySold(notes, said)],
    checks: checksIn(said),
    waits: [...waitsIn(said), ...arrivalsIn(notes, said)],
    cautions: cautionsIn(notes, site),
    questions: [...questions, ...unanswered(left, { lines, questions })],
  };
}

/** "Screws, 40 a sheet": the drywall screws that the area would take. */
const isKindOf = (reckoned: ComputedLine, told: ComputedLine): boolean =>
  reckoned.item.endsWith(` ${told.item}`) && reckoned.noteIds.some((id) => told.noteIds.includes(id));
