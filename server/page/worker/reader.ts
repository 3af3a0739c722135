/**
 * Reads notes on the phone, beside the page: the vocabulary is big, and building it must not hold up a thumb.
 * Takes `{id, text, options}` and answers `{id, facts}`.
 */
import { readNote } from '../../../parser/index.ts';
import { builtIn, withTerms } from '../../../parser/trade/index.ts';
import type { ReadOptions, Term } from '../../../parser/types.ts';
import { inOwnNames, ownTerms } from '../../words/own.ts';

export interface ToRead {
  id: string;
  text: string;
  options: Omit<ReadOptions, 'vocabulary' | 'wordClass'>;
  /** The firm's own words, beside those that ship with the product. */
  taught: Term[];
  crew: string[];
}

const worker = self as unknown as DedicatedWorkerGlobalScope;

worker.addEventListener('message', ({ data }: MessageEvent<ToRead>) => {
  const { id, text, options, taught, crew } = data;
  const own = ownTerms(taught, crew);
  const vocabulary = own.length ? withTerms(builtIn(), own) : builtIn();
  const { facts } = readNote(text, { ...options, vocabulary });
  worker.postMessage({ id, facts: inOwnNames(facts, taught, crew) });
});
