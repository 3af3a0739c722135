import { wordsOf } from '../trade/likeness.ts';

/** A name that something may have, and what speaks for it. */
export interface Weighed {
  words: string;
  weight: number;
}

/** So many of the likeliest names are asked; the rest hardly count. */
const ASKED = 16;

/**
 * The name that agrees best with all that are likely: where one of two things may be meant, the name that holds both is
 * right more often than either. Null where there is no name.
 *
 * @param said the words that the fact quotes: what they say, a name need not say again
 * @param flatter so many times flatter the odds are taken than the weights have them, which are surer of themselves than
 *   they are right
 */
export function mostAgreed<N extends Weighed>(names: readonly N[], said: string, flatter: number): N | null {
  const asked = names
    .filter(({ words }) => words)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, ASKED);
  const around = wordsOf(said);
  const held = asked.map(({ words, weight }) => ({
    words: wordsOf(words),
    odds: Math.exp((weight - asked[0]!.weight) / flatter),
  }));
  let best: N | null = null;
  let most = Number.NEGATIVE_INFINITY;
  held.forEach((own, i) => {
    const agreed = held.reduce(
      (sum, other) => sum + other.odds * (own === other ? 1 : agreement(own.words, other.words, around)),
      0,
    );
    if (agreed > most) [best, most] = [asked[i]!, agreed];
  });
  return best;
}

/** How well a name serves where another one is right, 0 to 1: half of the other's words in it or its span, and little else. */
function agreement(name: ReadonlySet<string>, right: ReadonlySet<string>, around: ReadonlySet<string>): number {
  if (!name.size || !right.size) return 0;
  let both = 0;
  let told = 0;
  for (const word of right) {
    if (name.has(word)) both++;
    if (name.has(word) || around.has(word)) told++;
  }
  let meant = 0;
  for (const word of name) if (right.has(word) || around.has(word)) meant++;
  const found = told >= right.size / 2;
  const named = both >= right.size / 2 && meant >= name.size / 2;
  const even = (2 * both) / (name.size + right.size);
  return ((found ? 0.4 : 0) + (named ? 0.4 : 0) + 0.2 * even) ** 2;
}
