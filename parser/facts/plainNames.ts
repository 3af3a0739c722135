import { stem } from '../trade/likeness.ts';
import type { Fact } from '../types.ts';

/** Words that only lead on to others: nothing ends with them. */
const LEADS_ON = /^(?:by|at|to|where|from|of|for|with|and|or|but|than|the|an?|was|is|are|so)$/;

/** "Put it in first thing" names no thing. */
const WHEN = / (?:first|last) thing$/;

/** A name that says each of its words once, and ends with no word that leads on: `pour slab poured` is `pour slab`. */
export function plainName(name: string): string {
  const seen = new Set<string>();
  const words = name
    .replace(WHEN, '')
    .split(/ +/)
    .filter((word) => {
      const root = stem(word);
      if (seen.has(root)) return false;
      seen.add(root);
      return true;
    });
  while (words.length > 1 && LEADS_ON.test(words.at(-1)!)) words.pop();
  return words.join(' ');
}

/** The fact with its names plain. */
export function plainlyNamed(fact: Fact): Fact {
  switch (fact.kind) {
    case 'problem':
      return { ...fact, thing: plainName(fact.thing), defect: plainName(fact.defect) };
    case 'done':
    case 'followUp':
      return { ...fact, task: plainName(fact.task) };
    default:
      return fact;
  }
}
