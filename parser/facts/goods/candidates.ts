import type { Talk } from '../talk.ts';
import { fullerNames, phrasesMeant } from './meant.ts';
import type { Phrase } from './mentioned.ts';
import type { Naming, Placed, Told } from './naming.ts';
import { stretchesOf } from './stretches.ts';

/** What each lot may mean: its own words, cut short or long, or what was named before. Lots without any are left with an empty list. */
export function namingsOf(talk: Talk, placed: Placed, phrases: readonly Phrase[], told: readonly Told[]): Naming[] {
  const { lot } = placed;
  if (lot.code) return [{ chunks: lot.own, sizes: lot.sizes, code: lot.code, own: true, features: ['own code'] }];
  const stretches = stretchesOf(talk, placed);
  const own = [...stretches, ...fullerNames(talk, placed, stretches, phrases)];
  if (lot.kind === 'bare' || (lot.kind === 'article' && lot.named)) return own;
  return [...own, ...phrasesMeant(talk, placed, phrases, told)];
}
