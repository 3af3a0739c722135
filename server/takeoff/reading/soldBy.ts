import Fraction from 'fraction.js';
import { likeness, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Fact, Material } from '../../../parser/types.ts';
import type { Computed, NoteFacts } from '../types.ts';
import { readOnce } from './readOnce.ts';
import { type Said, saying } from './said.ts';
import { termsIn } from './terms.ts';

/** "One bucket per five sheets", "one packet to five rolls": neither is to be bought by that. */
const PACKS_FOR_PACKS = saying('<K>(?: of [a-z]+(?: [a-z]+)?)? (?:per|to|for every|for each|every)(?: the)? <K>', 'g');

/** "Two bags each post": so many for each of them. */
const PACKS_EACH = saying(
  '<K>(?: of)?(?: [a-z]+){0,3} (?:a|per|to a|each|every|for each|for every|down every|in each) (?:post|hole|footing|pier|tube)\\b',
  'g',
);

/** Figures of a note that tell how goods are sold, or what one covers. */
const soldIn = readOnce((said: Said): ReadonlySet<number> => {
  const ids = new Set(termsIn(said).sold);
  for (const m of said.words.matchAll(PACKS_FOR_PACKS)) for (const id of [m[1], m[2]]) ids.add(Number(id));
  for (const m of said.words.matchAll(PACKS_EACH)) ids.add(Number(m[1]));
  return ids;
});

/**
 * Goods that a note counts only by figures of how something is sold: "350 a gal, gal cans" asks for no 350 cans, "a 20 kilo
 * bag yields 0.01" for no bag. Not where another figure of the same note asks for them.
 */
export function onlySold(notes: readonly NoteFacts[], said: readonly Said[]): Computed['counted'] {
  return notes.flatMap(({ noteId, facts }, k) => {
    const note = said[k]!;
    const ids = soldIn(note);
    if (ids.size === 0) return [];
    const needs = facts.filter(isNeed);
    const tells = (f: Material) => isCountedBy(f, note, ids);
    return needs
      .filter((f) => needs.every((other) => tells(other) || likeness(wordsOf(f.item), wordsOf(other.item)) < 0.75))
      .map((f) => ({ thing: f.item, noteId }));
  });
}

const isNeed = (fact: Fact): fact is Material =>
  fact.kind === 'material' && /^(?:need|have|used)$/.test(fact.status) && fact.quantity !== null;

/** The fact's count is such a figure, and no other figure of the note is alike. */
function isCountedBy({ quantity, unit }: Material, { figures }: Said, ids: ReadonlySet<number>): boolean {
  const alike = figures.flatMap((f, id) =>
    new Fraction(quantity!).equals(f.value) && (f.unit ?? 'each') === (unit ?? 'each') ? [id] : [],
  );
  return alike.length > 0 && alike.every((id) => ids.has(id));
}
