import { ONES, TENS } from '../quantities/words.ts';
import type { Talk } from './talk.ts';

/** A count up to 99 in figures or words, where no quantity was read: "four" of "four business days for the granite". */
export function countAt(talk: Talk, i: number): { count: number; until: number } | null {
  if (/^\d{1,2}$/.test(talk.word(i))) return { count: Number(talk.word(i)), until: i + 1 };
  const ten = TENS.get(talk.word(i));
  const one = ONES.get(talk.word(ten ? i + 1 : i));
  if (ten) return one && one < 10 ? { count: ten + one, until: i + 2 } : { count: ten, until: i + 1 };
  return one ? { count: one, until: i + 1 } : null;
}
