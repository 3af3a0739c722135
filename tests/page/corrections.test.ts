import { describe, expect, it } from 'vitest';
import type { Fact } from '../../parser/types.ts';
import { corrected, fitting, following, unplaced } from '../../server/page/app/kit/corrections.ts';
import { followUp, material, problem } from '../jobs/made.ts';

const text = 'Need two boxes of screws and nails. Call the mill.';
const at = (start: number, quote: string, fact: Fact): Fact => ({ ...fact, quote, start, end: start + quote.length });
const goods = 'two boxes of screws and nails';
const screws = at(5, goods, material('screw', 2, 'need'));
const nails = at(5, goods, material('nail', 2, 'need'));
const call = at(36, 'Call the mill', followUp('call the mill', null));
const threeNails = { ...nails, quantity: 3, exact: '3' } as Fact;

const put = (id: string, was: Fact, fact: Fact | null) => ({ id, at: '2026-05-13T15:30:00', was, fact });
const note = (...corrections: ReturnType<typeof put>[]) => ({
  id: 'n',
  jobId: 'j',
  kind: 'note' as const,
  note: { saidAt: '2026-05-13T15:00:00', text },
  corrections,
  parked: null,
});
const sent = (...args: Parameters<typeof following>) =>
  following(...args).map((p) => [p.id, p.kind === 'entry' && p.entry.what]);

describe('what is put right before it was sent', () => {
  it('is shown in this phone’s own reading, the last hand last', () => {
    const reading = [screws, nails, call];
    expect(corrected(reading, [put('a', nails, threeNails)])).toEqual([screws, threeNails, call]);
    expect(corrected(reading, [put('a', nails, threeNails), put('b', nails, null)])).toEqual([screws, null, call]);
    expect(corrected(reading)).toEqual(reading);
  });

  it('goes to the fact that it is of, wherever the server has that', () => {
    const what = (index: number, fact: Fact | null) => ({ kind: 'correctFact', noteId: 'n', index, fact });
    expect(sent(note(put('a', nails, threeNails), put('b', call, null)), [call, nails, screws])).toEqual([
      ['a', what(1, threeNails)],
      ['b', what(0, null)],
    ]);
    // The server may take the same words for another kind.
    const flaw = at(41, 'the mill', problem('mill', 'call', null));
    expect(sent(note(put('b', call, null)), [screws, flaw])).toEqual([['b', what(1, null)]]);
  });

  it('is told of where the server read nothing', () => {
    const lost = note(put('a', nails, threeNails), put('b', call, null));
    expect(following(lost, [])).toEqual([]);
    expect(unplaced(lost, [])).toEqual([goods]);
    expect(unplaced(lost, [screws])).toEqual([]);
  });

  it('outlasts other words where its own are still there', () => {
    const both = [put('a', nails, threeNails), put('b', call, null)];
    expect(fitting(both, 'Need two boxes of screws and nails. Ask the mill.')).toEqual([both[0]]);
  });
});
