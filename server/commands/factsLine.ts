import type { Done, Fact, FollowUp, NoteReading } from '../../parser/index.ts';

const pick = <K extends Fact['kind']>(facts: readonly Fact[], kind: K) =>
  facts.filter((f): f is Extract<Fact, { kind: K }> => f.kind === kind);

/** Work by the words in which it was told, and by its name. */
const asTold = <F extends FollowUp | Done>({ wording, ...fact }: F) => ({
  ...fact,
  task: wording ? `${wording} (${fact.task})` : fact.task,
});

/** One note's reading as a line of the `read` command: lists of plain entries, each with its words. */
export function factsLine(id: string, reading: NoteReading): object {
  const { facts, heard, quantities, times } = reading;
  return {
    id,
    heard: heard.tokens
      .filter((t) => !t.skip && t.kind !== 'break')
      .map((t) => t.word)
      .join(' '),
    // Named with its room here, since the line has no field for it.
    measurements: pick(facts, 'measurement').map((m) => ({
      ...m,
      of: m.area && !m.of.includes(m.area) ? `${m.area} ${m.of}` : m.of,
    })),
    materials: pick(facts, 'material').map((m) => ({ ...m, status: m.status === 'ordered' ? 'bought' : m.status })),
    problems: pick(facts, 'problem'),
    followUps: pick(facts, 'followUp').map(asTold),
    done: pick(facts, 'done').map(asTold),
    decisions: pick(facts, 'decision'),
    spending: pick(facts, 'spending'),
    commands: pick(facts, 'command'),
    quantities: quantities.map(({ quote, start, end, value, unit, rule }) => ({
      quote,
      start,
      end,
      value: value.valueOf(),
      exact: value.toFraction(),
      unit,
      rule,
    })),
    times: times.map(({ quote, start, end, date, to, relation, rule }) => ({
      quote,
      start,
      end,
      date,
      to,
      relation,
      rule,
    })),
    repairs: heard.repairs,
  };
}
