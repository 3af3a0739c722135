const VALUES: ReadonlyMap<string, number> = new Map([
  ...'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'
    .split(' ')
    .map((word, k): [string, number] => [word, k + 1]),
  ...'thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, k): [string, number] => [word, 10 * (k + 3)]),
]);

/** Number words that goods are counted by, one at a time. */
const NUMBERS: readonly string[] = [...VALUES.keys()];
/** A pattern of one number, in figures or as such a word. */
export const NUMBER = `\\d+|${NUMBERS.join('|')}`;
/** What it comes to; null for any other word. */
export const numberOf = (word: string): number | null =>
  /^\d+$/.test(word) ? Number(word) : (VALUES.get(word.toLowerCase()) ?? null);
