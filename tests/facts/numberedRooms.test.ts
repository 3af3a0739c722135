import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const AREAS = ['1A', '2B', '204', 'hall'];
const read = (text: string, areas: readonly string[] = AREAS) => readNote(text, { saidAt: SAID_AT, areas });
const figures = (text: string, areas?: readonly string[]) =>
  read(text, areas).quantities.map((q) => `${q.value.toFraction()} ${q.unit}`);

describe('a room that goes by a number', () => {
  it.each([
    ['the valve in 1A drips, 2 bags', ['2 bag']],
    ['1a smells of gas', []],
    ['two b tub gasket is in', []],
    ['in 204 hang 4 blinds', ['4 each']],
  ])('is no quantity: %s', (text, wanted) =>
    expect(figures(text).map((f) => f.replace('null', 'each'))).toEqual(wanted),
  );

  it('is one where the job has no such room, and where words only look like it', () => {
    expect(figures('a 1A fuse', ['hall'])).toEqual(['1 A']);
    expect(figures('put a 15A breaker in 1A')).toEqual(['15 A']);
    expect(read('that one a bit tight').terms.map((t) => t.term.name)).not.toContain('1A');
  });

  it.each([
    ['the valve in 1A drips', '1A'],
    ['2bs tub drips', '2B'],
    ["2B's tub drips", '2B'],
    ['204 door sticks', '204'],
  ])('is where it is told of: %s', (text, area) => expect(read(text).facts).toMatchObject([{ kind: 'problem', area }]));

  it('stands in a name as the job writes it', () =>
    expect(read('paint 2b tomorrow').facts).toMatchObject([{ kind: 'followUp', task: 'paint 2B' }]));
});
