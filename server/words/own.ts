import { tokenise } from '../../parser/hearing/tokens.ts';
import { mentionsIn } from '../../parser/trade/mentions.ts';
import type { Fact, Term, Vocabulary } from '../../parser/types.ts';
import type { OrderLine } from '../jobs/types.ts';

const firstName = (name: string) => name.split(' ')[0]!;

/** A firm's own words as the reader takes them: those taught, and each of the crew by name, who can be given work. */
export const ownTerms = (taught: readonly Term[], crew: readonly string[]): Term[] => [
  ...taught.map(({ name, kind, also, counter, soldBy }) => ({ name, kind, also, counter, soldBy })),
  ...crew.map((name): Term => ({ name: name.toLowerCase(), kind: 'role', also: [firstName(name).toLowerCase()] })),
];

/**
 * Facts by the firm's own names: work given to one of the crew carries the name as it is written, whichever half of
 * it was said, and a thing said by a taught other name goes by its first.
 */
export function inOwnNames(facts: readonly Fact[], taught: readonly Term[], crew: readonly string[]): Fact[] {
  const people = new Map(crew.flatMap((name) => [firstName(name), name].map((said) => [said.toLowerCase(), name])));
  const things = new Map(taught.flatMap(({ name, also = [] }) => also.map((said) => [said, name])));
  const person = (who: string | null) => (who && people.get(who.toLowerCase())) || who;
  const thing = (said: string) => things.get(said.toLowerCase()) ?? said;
  return facts.map((fact) => {
    switch (fact.kind) {
      case 'followUp':
      case 'done':
        return { ...fact, who: person(fact.who) };
      case 'material':
        return { ...fact, item: thing(fact.item) };
      case 'problem':
        return { ...fact, thing: thing(fact.thing) };
      case 'measurement':
        return { ...fact, of: thing(fact.of) };
      default:
        return fact;
    }
  });
}

/** Order lines at the counter that sells them, where the words tell which. */
export function atCounters(lines: readonly OrderLine[], vocabulary: Vocabulary): OrderLine[] {
  return lines.map((line) => {
    if (line.counter !== 'general') return line;
    // The last word names the thing: a "deck screw" is a screw.
    const found = mentionsIn(tokenise(line.item), line.item, vocabulary).findLast((m) => m.term.counter);
    return found ? { ...line, counter: found.term.counter! } : line;
  });
}
