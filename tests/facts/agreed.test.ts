import { describe, expect, it } from 'vitest';
import { agreedName, type Led, mostAgreed } from '../../parser/facts/agreed.ts';

const named = (lead: string, words: string, weight: number) => ({ lead, words: `${lead} ${words}`.trim(), weight });

const agreedWords = (names: readonly Led[], said: string, flatter: number) =>
  agreedName(names, said, flatter)?.words ?? '';

describe('which name is given', () => {
  it('is the likeliest where one is far ahead', () => {
    const names = [named('scrape', 'tail piece', 9), named('scrape', 'shower', 2)];
    expect(agreedWords(names, 'scrape it', 1)).toBe('scrape tail piece');
    expect(mostAgreed(names, 'scrape it', 1)).toBe(names[0]);
  });

  it('says another thing in brackets where that is about as likely', () => {
    const names = [named('scrape', 'tail piece', 3), named('scrape', 'shower', 2.8)];
    expect(agreedWords(names, 'scrape it', 1)).toBe('scrape tail piece (shower)');
  });

  it('takes a name that holds both before it makes one', () => {
    const names = [named('', 'door', 3), named('', 'pantry', 2.9), named('', 'pantry door', 2.8)];
    expect(agreedWords(names, 'it sticks', 1)).toBe('pantry door');
  });

  it('joins no two kinds of work', () => {
    const names = [named('sand', 'shelf', 3), named('hang', 'mirror', 2.9)];
    expect(agreedWords(names, 'then that', 1)).toBe('sand shelf');
  });

  it('says nothing in brackets that the quote says', () => {
    const names = [named('scrape', 'tail piece', 3), named('scrape', 'shower', 2.8)];
    expect(agreedWords(names, 'scrape it in the shower', 1)).not.toContain('(shower)');
  });

  it('says nothing again', () => {
    const names = [named('fix', 'hinges', 3), named('fix', 'hinge door', 2.9)];
    expect(agreedWords(names, 'fix them', 1)).not.toMatch(/hinge.*hinge/);
  });

  it('is empty where nothing has a name', () => {
    expect(agreedWords([], 'that', 1)).toBe('');
    expect(mostAgreed([], 'that', 1)).toBeNull();
  });
});
