import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import { candidatesOf, type Endings } from '../../server/jobs/list/endings/index.ts';
import { at, END, told } from './days.ts';
import { JOB, note, problem } from './made.ts';

const stands = (...texts: string[]) => told(...texts).items.map(({ state }) => state);

describe('what ends an item in whatever words', () => {
  it('is told by how the thing goes now', () => {
    expect(stands('hall door drags on the floor', 'hall door swings free now')).toEqual(['done']);
    expect(stands('hall door drags on the floor', 'planed the bottom, door clears now')[0]).toBe('done');
  });

  it.each([
    ['bath tap weeps at the spout', 'bath tap is bone dry this morning'],
    ['hall stair rail wobbles', 'hung on that stair rail and it never budged'],
    ['hall outlet is dead', 'hall outlet shows 121 volts'],
    ['attic fan rattles', 'attic fan is dead quiet'],
  ])('is told by its flaw having its own cure: %s, %s', (flaw, cure) => {
    expect(stands(flaw, cure)[0]).toBe('done');
  });

  it('is not told by the cure of another thing, nor by what is for another day', () => {
    expect(stands('bath tap weeps at the spout', 'kitchen drain is bone dry')[0]).toBe('open');
    expect(stands('hall stair rail wobbles', 'hall stair rail gets two screws tomorrow')[0]).toBe('open');
  });

  it('opens no flaw with the words that say so', () => {
    expect(stands('kitchen drain is slow', 'kitchen drain runs clear')).toEqual(['done']);
  });

  it('is not told by what is done elsewhere in the room', () => {
    const [tile] = told('hall tile is cracked', 'that crusty outlet in the hall is done').items;
    expect(tile).toMatchObject({ state: 'open' });
  });

  it('is not told by the name of a room that stands in its own', () => {
    const job = { areas: ['mud room'], builtYear: null };
    const trap = note('a', at(1), problem('sink trap mud room', 'dripping', null));
    const text = 'mud room door swings free now';
    const door = { ...note('b', at(2)), what: { kind: 'noteRead' as const, facts: [], text, parser: '1' } };
    expect(fold(job, [trap, door], END).items[0]).toMatchObject({ state: 'open' });
  });

  it('is not told by goods that came, nor by what is still to do', () => {
    expect(stands('hall handrail bracket is loose', 'got the bracket for the handrail')[0]).toBe('open');
    expect(stands('hall handrail bracket is loose', 'that bracket is still loose, tomorrow')[0]).toBe('open');
  });

  it('keeps the words that said so', () => {
    const [door] = told('hall door drags on the floor', 'ok the hall door swings free now').items;
    expect(door!.history.at(-1)).toMatchObject({
      what: 'taken as done',
      words: expect.stringContaining('swings free now'),
    });
  });

  it('is taken back by a sentence, and stays so', () => {
    expect(stands('hall door drags on the floor', 'hall door swings free now', 'undo 1')).toEqual(['open']);
  });

  it('is not told by work in another room', () => {
    expect(stands('hall door drags on the floor', 'in the kitchen the door swings free now')[0]).toBe('open');
  });

  it('is never an item of the same note', () => {
    const seen: string[] = [];
    const endings: Endings = (note) => {
      seen.push(...candidatesOf(note).map(({ item }) => item.key));
      return [];
    };
    const read = (id: string, day: number, text: string) => ({
      ...note(id, at(day)),
      what: { kind: 'noteRead' as const, facts: [problem('door', 'drags', 'hall')], text, parser: '1' },
    });
    fold({ ...JOB, endings }, [read('a', 1, 'hall door drags. hall door swings free')], END);
    expect(seen).toEqual([]);
    fold({ ...JOB, endings }, [read('a', 1, 'hall door drags'), read('b', 2, 'hall door swings free')], END);
    expect(seen.length).toBeGreaterThan(0);
  });
});
