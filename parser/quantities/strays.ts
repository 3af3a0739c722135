import { isOneMore } from './cardinals.ts';
import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import { isBare, isDoor } from './weighing/index.ts';
import { PLURALS } from './words.ts';

/**
 * Numbers in words side by side, with nothing that joins them and nothing behind that they would count: "eleven ten", "eight
 * six". One size, a code, or two counts: which cannot be known, and each by itself was hardly said.
 */
export function strays(line: Line, drafts: readonly Draft[]): ReadonlySet<Draft> {
  const out = new Set<Draft>();
  for (let k = 0; k < drafts.length; ) {
    let end = k + 1;
    if (isSaid(line, drafts[k]!))
      while (drafts[end]?.from === drafts[end - 1]!.until && isSaid(line, drafts[end]!)) end++;
    const { until } = drafts[end - 1]!;
    const closed = endsPhrase(line, until) && !isListed(line, until) && !isOneMore(line, drafts[k]!.from);
    const run = drafts.slice(k, end);
    if (run.length > 1 && closed && !isDoor(line, run)) for (const draft of run) out.add(draft);
    k = end;
  }
  return out;
}

/** "Six nine and fourteen": a list without its commas. */
const isListed = (line: Line, at: number) => line.word(at) === 'and' && line.number(at + 1)?.shape === 'whole';

const isSaid = (line: Line, draft: Draft) =>
  isBare(draft) && draft.shape === 'whole' && draft.inWords && !draft.group && !PLURALS.has(line.word(draft.until - 1));
