import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { loadWordClass } from '../../server/words/wordClass.ts';

const wordClass = await loadWordClass();
const saidAt = '2026-03-04T09:00:00';
const tasks = (text: string, asked = true) =>
  readNote(text, { saidAt, ...(asked && { wordClass }) }).facts.flatMap((f) => (f.kind === 'followUp' ? [f.task] : []));

describe('words that only a general tagger knows', () => {
  it('tells verbs with lemma and form from nouns, and the same again', () => {
    expect(wordClass('hoovered', 'and', 'the')).toEqual({ class: 'verb', lemma: 'hoover', form: 'past' });
    expect(wordClass('hack', '', 'off')).toEqual({ class: 'verb', lemma: 'hack', form: 'base' });
    expect(wordClass('chapel', 'the', 'is')).toEqual({ class: 'noun' });
    expect(wordClass('hack', '', 'off')).toBe(wordClass('hack', '', 'off'));
    expect(wordClass('', '', '')).toBeNull();
  });

  it('makes an order of a verb that the table lacks, and nothing of its nouns', () => {
    expect(tasks('hack off the plaster in the porch')).toEqual(['hack off plaster in porch']);
    expect(tasks('hack off the plaster in the porch', false)).toEqual([]);
    expect(tasks('the hack saw is in the van')).toEqual([]);
  });
});
