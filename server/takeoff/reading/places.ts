import { readOnce } from './readOnce.ts';
import { figureAt, type Said, saying } from './said.ts';

/** Places of the building that goods go to; nobody buys them by the count. */
const PLACES = saying(
  '(?:<NC>|\\b(?:an?|one)) (?:[a-z]+ ){0,2}?(bay|pad|footing|slab|wall|ceiling|room|bedroom|closet|opening|run|slope|gable|side|face)s?\\b',
  'g',
);

/** "Casing around four windows": what goods go round is there already. */
const AROUND = saying('\\ba?round (?:the )?<NC> (?:[a-z]+ ){0,2}?(window|door)s?\\b', 'g');

/** "Three pads", "21 bays": places counted in a note that goods are reckoned from, singular. */
export const placesCounted: (said: Said) => readonly string[] = readOnce((said) =>
  [PLACES, AROUND].flatMap((pattern) =>
    [...said.words.matchAll(pattern)]
      .filter((m) => m[1] === undefined || figureAt(said, m[1]).value.d === 1n)
      .map((m) => m[2]!),
  ),
);
