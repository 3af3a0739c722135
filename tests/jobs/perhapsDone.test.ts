import { describe, expect, it } from 'vitest';
import { perhapsDoneBy } from '../../server/jobs/list/perhapsDone.ts';
import { itemText, replyTo } from '../../server/talk/index.ts';
import { END, told } from './days.ts';

const HATCH = 'Roof hatch is stiff.';
const lifts = (...more: string[]) => told(HATCH, 'Hatch lifts easy.', ...more).items[0]!;

describe('words that may have finished an item', () => {
  it('stand on it, and leave it open', () => {
    const item = lifts();
    expect(item.state).toBe('open');
    expect(perhapsDoneBy(item)).toBe('Hatch lifts easy');
    expect(itemText(item, END.slice(0, 10))).toContain('perhaps done: "Hatch lifts easy"');
  });

  it('are asked about in the reply', () => {
    const reply = replyTo(told(HATCH), told(HATCH, 'Hatch lifts easy.'), 'e-n1', []);
    expect(reply.lines.map(({ text }) => text).join(' ')).toMatch(/perhaps done.*say "1 is done"/);
  });

  it.each([
    ['1 is done', 'done'],
    ['keep 1', 'open'],
  ])('are settled by a sentence: %s', (said, state) => {
    const item = lifts(said);
    expect(item.state).toBe(state);
    expect(perhapsDoneBy(item)).toBeNull();
  });

  it('tell nothing any more once the item is spoken of again', () => {
    const item = lifts('Roof hatch is still stiff.');
    expect(item.state).toBe('open');
    expect(perhapsDoneBy(item)).toBeNull();
  });

  it('are taken back with the last thing said of it', () => {
    expect(perhapsDoneBy(lifts('undo 1'))).toBeNull();
  });
});
