import { wordsOf } from '../trade/likeness.ts';

/** A name that something may have, and what speaks for it. */
export interface Weighed {
  words: string;
  weight: number;
}

/** A name with what it says is done; empty for the name of a thing alone. */
export interface Led extends Weighed {
  lead: string;
}

/** So many of the likeliest names are asked; the rest hardly count. */
const ASKED = 16;

/** So many of the likeliest are tried with another thing said besides. */
const DOUBTED = 6;
/** So much more has to agree before a name says two things: each word in vain makes it harder to read. */
const CLEARLY = 0.02;

/**
 * The name that agrees best with all that are likely: where one of two things may be meant, the name that holds both is
 * right more often than either. Null where there is no name.
 *
 * @param said the words that the fact quotes: what they say, a name need not say again
 * @param flatter so many times flatter the odds are taken than the weights have them, which are surer of themselves than
 *   they are right
 */
export const mostAgreed = <N extends Weighed>(names: readonly N[], said: string, flatter: number): N | null =>
  bestOf(oddsOf(names, flatter), wordsOf(said))?.name ?? null;

/**
 * That name with its words; where another thing is about as likely and no name holds both, they say it besides, in
 * brackets: `scrape tail piece (shower)`. Null where there is no name.
 */
export function agreedName<N extends Led>(
  names: readonly N[],
  said: string,
  flatter: number,
): { name: N; words: string } | null {
  const likely = oddsOf(names, flatter);
  const around = wordsOf(said);
  const best = bestOf(likely, around);
  if (!best) return null;
  let { words } = best.name;
  let most = best.agreed + CLEARLY * likely.reduce((sum, { odds }) => sum + odds, 0);
  const doubted = likely.slice(0, DOUBTED);
  for (const { name, held } of doubted)
    for (const other of doubted) {
      if (other.name.lead !== name.lead) continue;
      const besides = other.name.words.split(' ').filter((word) => ![...wordsOf(word)].every((w) => held.has(w)));
      // What the quote says anyhow, brackets need not.
      if (besides.every((word) => [...wordsOf(word)].every((w) => around.has(w)))) continue;
      const both = `${name.words} (${besides.join(' ')})`;
      const agreed = agreedWith(wordsOf(both), likely, around);
      if (agreed > most) [words, most] = [both, agreed];
    }
  return { name: best.name, words };
}

/** A name with its odds and the words that it holds. */
interface Likely<N extends Weighed> {
  name: N;
  odds: number;
  held: ReadonlySet<string>;
}

/** The likeliest names, the first having odds of 1. */
function oddsOf<N extends Weighed>(names: readonly N[], flatter: number): Likely<N>[] {
  const asked = names
    .filter(({ words }) => words)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, ASKED);
  return asked.map((name) => ({
    name,
    odds: Math.exp((name.weight - asked[0]!.weight) / flatter),
    held: wordsOf(name.words),
  }));
}

function bestOf<N extends Weighed>(likely: readonly Likely<N>[], around: ReadonlySet<string>) {
  let best: { name: N; agreed: number } | null = null;
  for (const { name, held } of likely) {
    const agreed = agreedWith(held, likely, around);
    if (!best || agreed > best.agreed) best = { name, agreed };
  }
  return best;
}

const agreedWith = (
  held: ReadonlySet<string>,
  likely: readonly Likely<Weighed>[],
  around: ReadonlySet<string>,
): number =>
  likely.reduce((sum, other) => sum + other.odds * (held === other.held ? 1 : agreement(held, other.held, around)), 0);

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
