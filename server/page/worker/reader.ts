/**
 * Reads notes on the phone, beside the page: the vocabulary is big, and building it must not hold up a thumb. Forms of
 * sizes are worked out here too, since they are read by the same numbers and units.
 * Takes `Asked` and answers `Answered` of the same id.
 */
import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readNote } from '../../../parser/index.ts';
import { builtIn, withTerms } from '../../../parser/trade/index.ts';
import type { Fact, ReadOptions, Term } from '../../../parser/types.ts';
import type { Refusal } from '../../takeoff/calculators/reckoned.ts';
import {
  askCheck,
  type CheckAnswer,
  type CheckForm,
  type Form,
  type FormAnswer,
  reckonForm,
} from '../../takeoff/form/index.ts';
import { inOwnNames, ownTerms } from '../../words/own.ts';

interface Own {
  /** The firm's own words, beside those that ship with the product. */
  taught: readonly Term[];
  crew: readonly string[];
}

export type Asked = { id: string } & (
  | (Own & { ask: 'facts'; text: string; options: Omit<ReadOptions, 'vocabulary' | 'wordClass'> })
  /** Is it a word of the vocabulary, from its first to its last letter? */
  | (Own & { ask: 'known'; word: string })
  | { ask: 'reckon'; form: Form }
  | { ask: 'check'; form: CheckForm }
);
export type Answered = { id: string } & (
  | { ask: 'facts'; facts: Fact[] }
  | { ask: 'known'; known: boolean }
  | { ask: 'reckon'; answer: FormAnswer | CheckAnswer | Refusal }
);

const worker = self as unknown as DedicatedWorkerGlobalScope;

worker.addEventListener('message', ({ data }: MessageEvent<Asked>) => worker.postMessage(answer(data)));

function answer(asked: Asked): Answered {
  if (asked.ask === 'reckon') return { id: asked.id, ask: 'reckon', answer: reckonForm(asked.form) };
  if (asked.ask === 'check') return { id: asked.id, ask: 'reckon', answer: askCheck(asked.form) };
  const own = ownTerms(asked.taught, asked.crew);
  const vocabulary = own.length ? withTerms(builtIn(), own) : builtIn();
  if (asked.ask === 'known') {
    const tokens = tokenise(asked.word);
    return { id: asked.id, ask: 'known', known: vocabulary.match(tokens, 0)?.until === tokens.length };
  }
  const { facts } = readNote(asked.text, { ...asked.options, vocabulary });
  return { id: asked.id, ask: 'facts', facts: inOwnNames(facts, asked.taught, asked.crew) };
}
