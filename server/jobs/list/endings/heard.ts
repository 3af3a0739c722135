import { wordsOf } from '../../../../parser/trade/likeness.ts';
import type { Fact } from '../../../../parser/types.ts';
import { isInAtSupplier } from '../../said/arranged.ts';
import { type Clause, clausesOf, thingsAmong } from './clauses.ts';
import { type Rooms, roomsOf } from './rooms.ts';

/** A clause with what was read in it, before the list is asked: the same however often its note is met. */
export interface HeardClause {
  clause: Clause;
  /** Kinds of the facts that tell of work, flaws or goods there, in one word. */
  read: string;
  /** Key words of the finished work read there, and those of them that name things. */
  named: ReadonlySet<string>;
  thingsNamed: readonly string[];
  /** Both the clause's key words and those: an item may be found by them. And those of them that name things. */
  said: ReadonlySet<string>;
  things: readonly string[];
  /** The room that it is told of; null where the note names none. */
  room: string | null;
  /** The job's rooms. */
  rooms: Rooms;
}

/**
 * What may tell of an item as finished: not the clauses that tell of goods as in where they are to come from.
 *
 * @param areas the job's rooms
 */
export const heardIn = (text: string, facts: readonly Fact[], areas: readonly string[]): HeardClause[] =>
  clausesOf(text).flatMap((clause) => {
    if (isInAtSupplier(text, clause)) return [];
    const { read, named } = readIn(clause, facts);
    const { words, things, said } = clause;
    const thingsNamed = thingsAmong(named);
    return {
      clause,
      read,
      named,
      thingsNamed,
      said: named.size ? new Set([...words, ...named]) : words,
      things: named.size ? [...new Set([...things, ...thingsNamed])] : things,
      room:
        areas.find((area) => said.includes(area.toLowerCase())) ??
        facts.findLast((fact) => fact.start < clause.end)?.area ??
        null,
      rooms: roomsOf(areas),
    };
  });

function sortOf(fact: Fact): string | null {
  switch (fact.kind) {
    case 'done':
      return 'done';
    case 'followUp':
      return 'plan';
    case 'problem':
      return fact.state === 'fixed' ? 'fixed' : 'flaw';
    // "Got the three deck boards": they are there, and not yet down.
    case 'material':
      return fact.status === 'used' || fact.status === 'mentioned' ? null : 'goods';
    default:
      return null;
  }
}

const NONE: ReadonlySet<string> = new Set();

/** What was read in a clause: kinds of fact, and the key words of finished work. */
function readIn(clause: Clause, facts: readonly Fact[]): Pick<HeardClause, 'read' | 'named'> {
  const kinds = new Set<string>();
  let named: ReadonlySet<string> = NONE;
  for (const fact of facts) {
    if (fact.start >= clause.end || clause.start >= fact.end) continue;
    const sort = sortOf(fact);
    if (sort) kinds.add(sort);
    if (fact.kind === 'done' && !named.size) named = wordsOf(fact.task);
  }
  return { read: [...kinds].sort().join('+') || 'none', named };
}
