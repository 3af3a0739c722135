export const NUMBERS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
export const NUMBER = `\\d+|${NUMBERS.slice(1).join('|')}`;
export const numberOf = (word: string): number | null =>
  /^\d+$/.test(word)
    ? Number(word)
    : NUMBERS.indexOf(word.toLowerCase()) > 0
      ? NUMBERS.indexOf(word.toLowerCase())
      : null;
