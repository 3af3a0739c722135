import { describe, expect, it } from 'vitest';
import { builtIn, withTerms } from '../../parser/trade/index.ts';
import { bringOf } from '../../server/jobs/bring.ts';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { done, followUp, JOB, measurement, note } from './made.ts';

const bring = (entries: Entry[], vocabulary = builtIn()) =>
  bringOf(fold(JOB, entries, '2026-05-09T20:00:00'), vocabulary);
const at = (k: number) => `2026-05-0${k}T09:00:00`;

describe('what to bring', () => {
  it('is each thing once, with every item that calls for it, most called for first', () => {
    const { tools, parts } = bring([
      note('n1', at(1), followUp('caulk the sink', 'kitchen'), followUp('silicone the counter', 'hall')),
    ]);
    expect(tools[0]).toEqual({ what: 'caulk gun', items: [1, 2] });
    expect(parts.map((p) => p.what)).toContain('rags');
    expect(parts.map((p) => p.what)).not.toContain('caulk gun');
  });

  it('leaves out what is done, what waits and what another does', () => {
    const later = { notBefore: '2026-06-01', waitingFor: 'thinset, 24 h' };
    const { tools, parts } = bring([
      note('n1', at(1), followUp('caulk the sink', 'kitchen'), followUp('grout the floor', 'hall', later)),
      note('n2', at(2), done('caulk the sink', 'kitchen'), followUp('paint the trim', 'hall', { who: 'painter' })),
    ]);
    expect([...tools, ...parts]).toEqual([]);
  });

  it('has the sizes to cut to beside it, of the areas where something is ready', () => {
    const wanted = { ...measurement('shelf', 31.25, 'in', 'kitchen'), role: 'wanted' as const };
    const found = measurement('gap', 0.25, 'in', 'kitchen');
    const elsewhere = { ...measurement('cap', 12, 'in', 'hall'), role: 'wanted' as const };
    const { sizes } = bring([note('n1', at(1), followUp('hang the shelf', 'kitchen'), wanted, found, elsewhere)]);
    expect(sizes.map((s) => s.of)).toEqual(['shelf']);
  });

  it.each<[string, string[], string[]]>([
    ['swap dimmer', ['voltage tester', 'wire strippers'], ['pry bar']],
    ['replace outlet', ['voltage tester', 'screwdriver'], ['pry bar']],
    ['reset toilet', ['wrench', 'wax ring', 'closet bolt'], ['level']],
    ['replace faucet', ['wrench', 'thread tape'], ['pry bar']],
    ['replace base', ['pry bar'], ['voltage tester']],
  ])('%s: what is handled decides where the verb does not', (task, wanted, not) => {
    const { tools, parts } = bring([note('n1', at(1), followUp(task, 'kitchen'))]);
    const brought = [...tools, ...parts].map((b) => b.what);
    expect(brought).toEqual(expect.arrayContaining(wanted));
    for (const what of not) expect(brought).not.toContain(what);
  });

  it("knows a firm's own work", () => {
    const own = withTerms(builtIn(), [{ name: 'hot mop', kind: 'task', also: [], bring: ['kettle'] }]);
    expect(bring([note('n1', at(1), followUp('hot mop the pan', 'kitchen'))], own).tools).toEqual([
      { what: 'kettle', items: [1] },
    ]);
  });
});
