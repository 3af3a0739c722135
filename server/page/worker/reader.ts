/**
 * Reads notes on the phone, beside the page: the vocabulary is big, and building it must not hold up a thumb.
 * Takes `Asked` and answers `Answered` of the same id.
 */
import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readNote } from '../../../parser/index.ts';
import { builtIn, withTerms } from '../../../parser/trade/index.ts';
import type { Fact, ReadOptions, Term } from '../../../parser/types.ts';
import { inOwnNames, ownTerms } from '../../words/own.ts';

export type Asked = {
  id: string;
  /** The firm's own words, beside those that ship with the product. */
  taught: readonly Term[];
  crew: readonly string[];
} & (
  | { ask: 'facts'; text: string; options: Omit<ReadOptions, 'vocabulary' | 'wordClass'> }
  /** Is it a word of the vocabulary, from its first to its last letter? */
  | { ask: 'known'; word: string }
);
export type Answered = { id: string } & ({ ask: 'facts'; facts: Fact[] } | { ask: 'known'; known: boolean });

const worker = self as unknown as DedicatedWorkerGlobalScope;

worker.addEventListener('message', ({ data }: MessageEvent<Asked>) => worker.postMessage(answer(data)));

function answer(asked: Asked): Answered {
  const own = ownTerms(asked.taught, asked.crew);
  const vocabulary = own.length ? withTerms(builtIn(), own) : builtIn();
  if (asked.ask === 'known') {
    const tokens = tokenise(asked.word);
    return { id: asked.id, ask: 'known', known: vocabulary.match(tokens, 0)?.until === tokens.length };
  }
  const { facts } = readNote(asked.text, { ...asked.options, vocabulary });
  return { id: asked.id, ask: 'facts', facts: inOwnNames(facts, asked.taught, asked.crew) };
}
