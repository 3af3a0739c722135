import Fraction from 'fraction.js';
import { likeness, wordsOf } from '../../../parser/trade/likeness.ts';
import { figureAt, notesOf, type Said, saying } from '../reading/said.ts';
import { isDone } from '../reading/wanted.ts';
import type { ComputedLine } from '../types.ts';

const NAMES =
  'elbows?|ells?|tees?|couplings?|end caps?|caps|adapters?|reducers?|wyes?|unions?|bushings?|crimp rings?|clamps?|straps?|connectors?|p[- ]traps?|ball valves?|stop valves?|shut ?offs?|hangers?|sweeps?|drop ?ears?|drop outlets?|miters?|downspouts?';
export const COUNTED_FITTINGS = saying(
  `<NC> ((?:[a-z]+ )?(?:${NAMES}))\\b(?! (?:of|at|per|a|each|every|for each)\\b)`,
  'g',
);

/** Fittings counted beside a run of pipe or wire that is reckoned: "six elbows too". What the note's facts have is left. */
export function fittingLines(notes: readonly Said[], reckoned: readonly ComputedLine[]): ComputedLine[] {
  const beside = new Set(reckoned.flatMap((l) => (l.unit === 'ft' ? l.noteIds : [])));
  return notesOf(beside, notes).flatMap((note) => {
    // What a list tells beside a run to come was used by nobody.
    const known = note.facts.flatMap((f) =>
      f.kind === 'material' && (f.status !== 'used' || isDone(f.quote)) ? [wordsOf(f.item)] : [],
    );
    return [...note.words.matchAll(COUNTED_FITTINGS)].flatMap(([, id, named]) => {
      const count = figureAt(note, id).value;
      const item = named!.replace(/^(?:more|the|of|and|with) /, '').replace(/(?<!s)s$/, '');
      if (count.d !== 1n || known.some((words) => likeness(words, wordsOf(item)) >= 0.75)) return [];
      return [lineOf(note, item, count)];
    });
  });
}

const lineOf = (note: Said, item: string, count: Fraction): ComputedLine => ({
  item,
  size: null,
  specs: [],
  area: note.area,
  amount: new Fraction(count),
  unit: 'each',
  pack: null,
  stockUsed: false,
  working: `${count.toFraction()} counted beside the run`,
  assumptions: [],
  source: 'as said',
  noteIds: [note.noteId],
});
