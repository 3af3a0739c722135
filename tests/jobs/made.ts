/** Facts and entries made by hand, so that the list is tested whatever the parser reads. */
import type { Command, Done, Fact, FollowUp, Material, Measurement, Problem } from '../../parser/types.ts';
import type { Entry, EntryBody } from '../../server/jobs/types.ts';

export const JOB = { areas: ['kitchen', 'hall'], builtYear: null };

const base = (quote: string, area: string | null) => ({
  quote,
  start: 0,
  end: quote.length,
  area,
  confidence: 0.9,
  rule: 'by hand',
});

export const problem = (thing: string, defect: string, area: string | null, more: Partial<Problem> = {}): Problem => ({
  ...base(`${thing} ${defect}`, area),
  kind: 'problem',
  thing,
  defect,
  state: 'open',
  suspected: false,
  ...more,
});

export const followUp = (task: string, area: string | null, more: Partial<FollowUp> = {}): FollowUp => ({
  ...base(task, area),
  kind: 'followUp',
  task,
  who: null,
  due: null,
  notBefore: null,
  waitingFor: null,
  condition: null,
  ...more,
});

export const done = (task: string, area: string | null): Done => ({
  ...base(task, area),
  kind: 'done',
  task,
  who: null,
});

export const material = (
  item: string,
  quantity: number | null,
  status: Material['status'],
  more: Partial<Material> = {},
): Material => ({
  ...base(item, null),
  kind: 'material',
  item,
  size: null,
  specs: [],
  quantity,
  exact: quantity === null ? null : String(quantity),
  atLeast: null,
  unit: 'each',
  status,
  counts: 'plain',
  ...more,
});

export const measurement = (of: string, value: number, unit: string, area: string | null): Measurement => ({
  ...base(of, area),
  kind: 'measurement',
  of,
  value,
  exact: String(value),
  unit,
  role: 'found',
});

export const hand = (id: string, at: string, what: EntryBody): Entry => ({
  id,
  jobId: 'j',
  at,
  by: null,
  source: null,
  what,
});

export const note = (id: string, at: string, ...facts: Fact[]): Entry => ({
  ...hand(id, at, { kind: 'noteRead', facts, text: facts.map((f) => f.quote).join('. '), parser: '1' }),
  source: { noteId: id, start: 0, end: 0 },
});

export const command = (verb: Command['verb'], number: number | null, more: Partial<Command> = {}): Command => ({
  ...base(`${verb} ${number ?? 'that'}`, null),
  kind: 'command',
  verb,
  number,
  about: null,
  to: null,
  question: null,
  ...more,
});
