import { show } from '../calculators/reckoned.ts';
import { figureAt, notesOf, type Said, saying } from '../reading/said.ts';
import type { ComputedLine } from '../types.ts';

/** "There's one full box on the truck": packs on hand, with no goods named beside them. */
const THERE = saying(
  "\\b(?:there's|theres|there is|there are|got|have|found|still have)(?: still)? <K>(?! of\\b)(?: (?:full|unopened|left|sitting|already|here|over))*(?= (?:on|in|at|from|out)\\b|[.,;]|$)",
);

/** Lines that come in packs, less the packs that their own note says are there; only where no other goods could be meant. */
export function packsThere(lines: readonly ComputedLine[], said: readonly Said[]): ComputedLine[] {
  return lines.map((line) => {
    if (!line.pack || line.stockUsed) return line;
    const { pack } = line;
    for (const note of notesOf(new Set(line.noteIds), said)) {
      const there = THERE.exec(note.words);
      const figure = there && figureAt(note, there[1]);
      const rivals = lines.filter((l) => l.pack?.unit === pack.unit && l.noteIds.includes(note.noteId));
      if (!figure || figure.unit !== pack.unit || rivals.length > 1) continue;
      const left = line.amount.sub(figure.value.mul(pack.holds));
      const amount = left.compare(0) > 0 ? left : left.mul(0);
      const working = `${line.working}; less ${show(figure.value)} ${pack.unit} there, so ${amount.div(pack.holds).ceil().toFraction()}`;
      return { ...line, amount, stockUsed: true, working };
    }
    return line;
  });
}
