/** What a flaw, a plan or finished work is called, before the list is asked: read once with its note. */
import { wordsOf } from '../../../parser/trade/likeness.ts';
import type { Fact } from '../../../parser/types.ts';
import { objectWords, verbOf } from '../said/verbs.ts';
import type { Standing } from './board.ts';
import { headIn, headOf } from './match.ts';

export interface Called {
  /** Key words of its name: of a flaw's thing and how that fails, of a task. */
  words: ReadonlySet<string>;
  /** The verb of a task, by stem, and the key words behind it; of a flaw neither. */
  verb: string;
  object: ReadonlySet<string>;
  /** What an item that it opens goes by. */
  filing: Filing;
}

interface Filing extends Pick<Standing, 'words' | 'head'> {
  /** Key words of what opens it, as said. */
  said: ReadonlySet<string>;
  /** They name the thing themselves, and do not only point at it. */
  namesIt: boolean;
}

const NONE: ReadonlySet<string> = new Set();

/** A fact that is no item of any list. */
export const NO_ITEM: Called = {
  words: NONE,
  verb: '',
  object: NONE,
  filing: { words: NONE, head: '', said: NONE, namesIt: false },
};

export function calledBy(fact: Fact): Called {
  switch (fact.kind) {
    case 'problem': {
      const { thing, defect, area, quote } = fact;
      const task = flawName(thing, defect);
      return {
        ...flawCalled({ task, problem: defect, thing, area }, quote),
        words: wordsOf(`${thing} ${defect}`),
      };
    }
    case 'followUp':
    case 'done': {
      const { task, area, quote } = fact;
      const words = wordsOf(task);
      return { words, verb: verbOf(task), object: objectWords(task), filing: filingOf(task, words, quote, area) };
    }
    default:
      return NO_ITEM;
  }
}

/**
 * A flaw as the item that it opens tells it.
 *
 * @param quote the words that open it
 */
export function flawCalled(
  { task, problem, thing, area }: Pick<Standing, 'task' | 'problem' | 'thing' | 'area'>,
  quote: string,
): Called {
  const words = wordsOf(`${task} ${problem} ${thing ?? ''}`);
  return { words, verb: '', object: NONE, filing: filingOf(thing ?? task, words, quote, area) };
}

/** A flaw by its thing, and by how that fails where the one does not tell the other. */
export const flawName = (thing: string, defect: string): string =>
  defect.includes(thing) || thing.includes(defect) ? thing : `${thing}: ${defect}`;

function filingOf(name: string, words: ReadonlySet<string>, quote: string, area: string | null): Filing {
  const said = wordsOf(quote);
  return { words, head: headIn(name, quote, area), said, namesIt: said.has(headOf(name)) };
}
