import { wordsOf } from '../../../../parser/trade/likeness.ts';
import type { Fact } from '../../../../parser/types.ts';
import type { Entry } from '../../types.ts';
import type { Standing } from '../board.ts';
import type { Clause } from './clauses.ts';
import type { Rooms } from './rooms.ts';

/** A clause as one note tells it: with the facts that were read there. */
export interface Telling {
  clause: Clause;
  entry: Entry;
  /** Kinds of the facts that tell of work, flaws or goods there, in one word. */
  read: string;
  /** Key words of the finished work read there. */
  named: ReadonlySet<string>;
  /** Both the clause's key words and those. */
  said: ReadonlySet<string>;
  /** Items that the note has met. */
  met: readonly Standing[];
  rooms: Rooms;
}

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
export function readIn(clause: Clause, facts: readonly (Fact | null)[]): Pick<Telling, 'read' | 'named' | 'said'> {
  const kinds = new Set<string>();
  let named: ReadonlySet<string> = NONE;
  for (const fact of facts) {
    if (!fact || fact.start >= clause.end || clause.start >= fact.end) continue;
    const sort = sortOf(fact);
    if (sort) kinds.add(sort);
    if (fact.kind === 'done' && !named.size) named = wordsOf(fact.task);
  }
  return {
    read: [...kinds].sort().join('+') || 'none',
    named,
    said: named.size ? new Set([...clause.words, ...named]) : clause.words,
  };
}
