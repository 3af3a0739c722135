import type { Token } from '../types.ts';

const TITLE = /^(?:M(?:r|rs|s)|Dr|Rev|Fr|Sgt|m(?:r|rs|s))$/;
const NAME = /^\p{Lu}\p{Ll}/u;

const besides = (tokens: readonly Token[], k: number, step: 1 | -1) =>
  tokens[k + step]?.text === '.' ? k + 2 * step : k + step;

/** "Dr. Amin", "Mrs Coyle": somebody's title, and no short word for a room. */
export const isTitle = (tokens: readonly Token[], k: number): boolean =>
  TITLE.test(tokens[k]?.text ?? '') && NAME.test(tokens[besides(tokens, k, 1)]?.text ?? '');

/** The name behind a title is nobody's misheard goods. */
export const isTitled = (tokens: readonly Token[], k: number): boolean => isTitle(tokens, besides(tokens, k, -1));
