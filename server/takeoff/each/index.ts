import Fraction from 'fraction.js';
import { plural } from '../../../parser/quantities/plural.ts';
import { show, toBuy } from '../calculators/reckoned.ts';
import type { Said } from '../reading/said.ts';
import type { Computed, ComputedLine } from '../types.ts';
import { countIn, onlyCounted, type PerThing, perThingIn } from './told.ts';

/** A thing's number where it was counted or reckoned, with how it came about. */
interface Known {
  count: Fraction;
  text: string;
}

/**
 * Small goods told by what they go with: two screws at every crossing, a ring to a toilet. The thing was counted in
 * the note or in an earlier one of the same area, or is itself reckoned (sheets, boards, joists); crossings are boards
 * by joists. `standing`: rows that are there already. Where the number of things is not known it asks.
 */
export function perThingLines(
  notes: readonly Said[],
  reckoned: readonly ComputedLine[],
  standing: readonly ComputedLine[],
): { lines: ComputedLine[]; counted: Computed['counted']; questions: { noteId: string; ask: string }[] } {
  const lines: ComputedLine[] = [];
  const counted: Computed['counted'] = [];
  const questions: { noteId: string; ask: string }[] = [];
  for (let k = 0; k < notes.length; k++) {
    const said = notes[k]!;
    for (const told of perThingIn(said)) {
      if (onlyCounted(said, told.thing)) counted.push({ thing: told.thing, noteId: said.noteId });
      const countOf = (thing: string) => countedLast(thing, notes, k);
      const known = knownOf(told, countOf, [...reckoned, ...standing], said.area);
      if (known) lines.push(lineOf(said, told, known));
      else if (reckoned.some((l) => l.noteIds.includes(said.noteId)) && !reckoned.some((l) => l.item === told.item))
        questions.push({ noteId: said.noteId, ask: `${told.item}: how many ${plural(told.thing)}?` });
    }
  }
  return { lines, counted, questions };
}

/** How many of a thing the notes of one area counted last, up to the one at a place. */
function countedLast(thing: string, notes: readonly Said[], at: number): Fraction | null {
  const { area } = notes[at]!;
  for (let k = at; k >= 0; k--) {
    const count = notes[k]!.area === area ? countIn(notes[k]!, thing) : null;
    if (count) return count;
  }
  return null;
}

function knownOf(
  { thing, count }: PerThing,
  countOf: (thing: string) => Fraction | null,
  reckoned: readonly ComputedLine[],
  area: string | null,
): Known | null {
  if (count) return { count, text: `${count.toFraction()} ${plural(thing)}` };
  const here = reckoned.filter((l) => l.area === area);
  if (thing === 'joist') return of(here, /\bjoist$/, thing);
  if (thing === 'crossing') return crossings(here, countOf('joist'));
  const told = countOf(thing);
  // A post stands in each hole.
  if (!told && thing === 'hole') return of(here, /\bpost$/, 'post');
  if (told) return { count: told, text: `${told.toFraction()} ${plural(thing)}` };
  return of(here, new RegExp(`\\b${thing}$`), thing) ?? packed(here, thing);
}

/** Pieces that were reckoned under the thing's own name. */
function of(lines: readonly ComputedLine[], named: RegExp, thing: string): Known | null {
  const line = lines.find((l) => named.test(l.item));
  return line ? { count: new Fraction(toBuy(line)), text: `${toBuy(line)} ${plural(thing)}` } : null;
}

/** Sheets and bags: what reckoned goods are bought by. */
function packed(lines: readonly ComputedLine[], thing: string): Known | null {
  const line = lines.find((l) => l.pack?.unit === thing);
  return line ? { count: new Fraction(toBuy(line)), text: `${toBuy(line)} ${plural(thing)} of ${line.item}` } : null;
}

/** @param standing joists that were counted, where none are to be bought */
function crossings(lines: readonly ComputedLine[], standing: Fraction | null): Known | null {
  const [boards, joists] = [lines.find((l) => /\bboard$/.test(l.item)), lines.find((l) => /\bjoist$/.test(l.item))];
  const under = joists ? toBuy(joists) : standing?.valueOf();
  if (!boards || !under) return null;
  const across = toBuy(boards);
  return {
    count: new Fraction(across * under),
    text: `${across} boards x ${under} joists = ${across * under} crossings`,
  };
}

const lineOf = (said: Said, { item, size, times, pack, assumed }: PerThing, { count, text }: Known): ComputedLine => ({
  item,
  size,
  specs: [],
  area: said.area,
  amount: count.mul(times),
  unit: pack ?? 'each',
  pack: null,
  stockUsed: false,
  working: `${text} x ${show(times)} = ${show(count.mul(times))}`,
  assumptions: assumed ? [assumed] : [],
  source: 'arithmetic from what was said',
  noteIds: [said.noteId],
});
