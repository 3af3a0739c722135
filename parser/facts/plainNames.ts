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

/** "Loose on the back porch": where it is stands with its thing. */
function withoutPlace(defect: string, quote: string): string {
  const [, what, leads] = PLACED.exec(defect) ?? [];
  return what && new RegExp(`\\b${leads} ${DETERMINER}\\b`, 'i').test(quote) ? what : defect;
}
const PLACED = /^(.+) (on|in|into|near|along|between|across|inside)$/;
const DETERMINER = '(?:the|a|an|that|this|each|both|every|my|his|her|our|their|its)';

/** The fact with its names plain. */
export function plainlyNamed(fact: Fact): Fact {
  switch (fact.kind) {
    case 'problem':
      return { ...fact, thing: plainName(fact.thing), defect: plainName(withoutPlace(fact.defect, fact.quote)) };
    case 'done':
    case 'followUp':
      return { ...fact, task: plainName(fact.task) };
    default:
      return fact;
  }
}
