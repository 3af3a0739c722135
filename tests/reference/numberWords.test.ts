import { ToWords } from 'to-words';
import { describe, expect, it } from 'vitest';
import { read } from '../quantities/read.ts';

// to-words is a general number-to-words library, independent of our grammar.
const words = new ToWords({ localeCode: 'en-US' });

describe('against a general number-to-words library', () => {
  it('reads back every whole number up to 9,999', () => {
    const wrong = Array.from({ length: 9999 }, (_, k) => k + 1).filter((n) => {
      const { quantities } = read(`cut ${words.convert(n)} inches`);
      return quantities.length !== 1 || quantities[0]!.value.valueOf() !== n || quantities[0]!.unit !== 'in';
    });
    expect(wrong).toEqual([]);
  });

  it('reads them with "and" and with hyphens too', () => {
    const wrong = Array.from({ length: 899 }, (_, k) => k + 101).filter((n) => {
      const said = words
        .convert(n)
        .toLowerCase()
        .replace('hundred ', 'hundred and ')
        .replace(/ty (?=one|two|three|four|five|six|seven|eight|nine)/, 'ty-');
      const { quantities } = read(`${said} feet`);
      return quantities.length !== 1 || quantities[0]!.value.valueOf() !== n;
    });
    expect(wrong).toEqual([]);
  });
});
