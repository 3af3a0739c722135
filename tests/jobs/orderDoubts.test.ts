import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { fold } from '../../server/jobs/index.ts';
import { replyTo } from '../../server/talk/index.ts';
import { at, END, told } from './days.ts';
import { hand, JOB, material, note } from './made.ts';

/** Days on which nothing is told of any goods. */
const quiet = (days: number) => Array.from({ length: days }, (_, k) => `swept the hall, load ${k + 1}`);
const states = (...texts: string[]) => told(...texts).order.map(({ item, state }) => [item, state]);

describe('goods asked for long ago and not told of since', () => {
  it('are to buy while they are fresh', () => {
    expect(states('need 2 tubes of caulk')).toEqual([['caulk', 'to buy']]);
    expect(states('need 2 tubes of caulk', ...quiet(2))).toEqual([['caulk', 'to buy']]);
  });

  it('are kept apart as not sure, with the day on which they were asked for', () => {
    const [line] = told('need 2 tubes of caulk', ...quiet(8)).order;
    expect(line).toMatchObject({ state: 'unsure', quantity: '2' });
    expect(line!.because).toContain('not sure, last asked for 2026-03-01');
  });

  it('come back when somebody says that they are still to get', () => {
    expect(states('need 2 tubes of caulk', ...quiet(8), 'still need the caulk')).toEqual([['caulk', 'to buy']]);
    expect(states('need 2 tubes of caulk', ...quiet(8), 'make it three')).toEqual([['caulk', 'to buy']]);
  });

  it.each(['the store had no caulk', 'forgot the caulk', 'caulk is still to get', 'caulk: they had none'])(
    'stay on the order where they were not to be had: %s',
    (said) => {
      expect(states('need 2 tubes of caulk', ...quiet(8), said)).toEqual([['caulk', 'to buy']]);
      expect(told('need 2 tubes of caulk', said).order[0]).toMatchObject({ quantity: '2' });
    },
  );

  it('come back by a tap, and stay so', () => {
    const notes = [
      note('n0', at(1), material('widget', 20, 'need')),
      ...quiet(8).map((_, k) => note(`q${k}`, at(2 + k))),
    ];
    const [line] = fold(JOB, notes, END).order;
    expect(line!.state).toBe('unsure');
    const tap = hand('h', at(11), { kind: 'setOrder', line: line!.key, state: 'to buy' });
    expect(fold(JOB, [...notes, tap], END).order[0]!.state).toBe('to buy');
    const count = hand('h', at(11), { kind: 'setOrder', line: line!.key, quantity: '5' });
    expect(fold(JOB, [...notes, count], END).order[0]).toMatchObject({ state: 'to buy', quantity: '5' });
    const later = note('z', at(13));
    expect(fold(JOB, [...notes, tap, later], END).order[0]!.state).toBe('to buy');
  });

  it('stay as they are while nobody speaks', () => {
    const notes = [note('n0', at(1), material('hinge', 1, 'need'))];
    expect(fold(JOB, notes, '2026-12-31T18:00:00').order[0]!.state).toBe('to buy');
  });

  it('are named once, in the reply to a note that speaks of goods, with what to say to keep them', () => {
    const said = (...texts: string[]) =>
      texts.flatMap((text, k) =>
        k === 0
          ? []
          : replyTo(
              told(...texts.slice(0, k)),
              told(...texts.slice(0, k + 1)),
              `n${k}`,
              readNote(text, { saidAt: at(k + 1), areas: JOB.areas }).facts,
            ).lines.flatMap((line) => (line.text.includes('caulk') ? line.text : [])),
      );
    expect(said('need 2 tubes of caulk', ...quiet(8))).toEqual([]);
    const goods = Array.from({ length: 8 }, (_, k) => `need ${k + 1} ${['hinge', 'shim', 'knob', 'latch'][k % 4]}s`);
    expect(said('need 2 tubes of caulk', ...goods)).toEqual([
      'Not sure if still to buy: 2 tubes caulk. If so, say "still need the caulk"',
    ]);
  });
});
