import type { Figure } from '../reading/said.ts';

const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const AT = new RegExp(
  `\\b(?:at|around|by|from) (?:about )?(\\d{1,2}|${NUMBERS.join('|')}|noon)\\b(?! ?(?:inch|foot|feet|of|by|x|percent)\\b) ?(am|pm|a\\.m|p\\.m)?`,
);

/**
 * Hour of the clock for which words plan work, 0 to 23; null where they name none. Where nobody said morning or
 * afternoon it falls into the working day: "at two" is 14, "at nine" is 9.
 */
export function planHour(words: string, figures: readonly Figure[]): number | null {
  const plain = words.replace(/\{N(\d+)\}/g, (_, id) => figures[Number(id)]!.value.toFraction());
  const [, said, half] = AT.exec(plain) ?? [];
  if (!said) return null;
  if (said === 'noon') return 12;
  const hour = Number(said) || NUMBERS.indexOf(said) + 1;
  if (hour < 1 || hour > 12) return null;
  if (half) return (hour % 12) + (half.startsWith('p') ? 12 : 0);
  return hour < 7 ? hour + 12 : hour;
}
