import Fraction from 'fraction.js';
import { show } from '../calculators/reckoned.ts';
import { feet } from '../reading/lengths.ts';
import { figureAt, notesOf, type Said, saying } from '../reading/said.ts';
import type { ComputedLine } from '../types.ts';

const WIRE = /\b(?:thhn|thwn|xhhw|wires?|conductors?)\b/;
/** "Three #8 thhn and a #10 green". */
const PULLED = saying(
  '(?:<NC>|\\b(an?|one)) (?:#|number |no )(?:<N>|(\\d{1,2})|(fourteens|twelves|tens|eights|sixes))(?: gauge)?\\b',
  'g',
);
const TAIL = saying(
  '<L>(?: of)?(?: (?:tails?|slack|extra|make ?up|spare|wire))*(?: (?:hanging|sticking|left)(?: out)?)? ?(?:at|on|in|off)? ?(both|each|either|the|one)(?: of the)? ends?\\b',
);

const GAUGES: Readonly<Record<string, string>> = {
  fourteens: '14',
  twelves: '12',
  tens: '10',
  eights: '8',
  sixes: '6',
};

/** Words of wires that go through a conduit: "three number tens go down it". */
export const pullsWires = (words: string): boolean =>
  /\bnumber (?:fourteens|twelves|tens|eights|sixes)\b/.test(words) || /\b(?:thhn|thwn|xhhw)\b/.test(words);

/** Single wires pulled through a run of conduit that is reckoned: each as long as the run and its tails. Lengths in feet. */
export function conductorLines(notes: readonly Said[], reckoned: readonly ComputedLine[]): ComputedLine[] {
  const runs = reckoned.filter((l) => /\b(?:conduit|emt|raceway|pvc)\b/.test(l.item));
  return notesOf(new Set(runs.flatMap((l) => l.noteIds)), notes).flatMap((note) => {
    const run = runs.find((l) => l.noteIds.includes(note.noteId));
    if (run?.unit !== 'ft' || !(WIRE.test(note.words) || pullsWires(note.words))) return [];
    const tail = TAIL.exec(note.words);
    const length = tail ? feet(note, figureAt(note, tail[1]), null) : null;
    const tails = length ? length.mul(/both|each|either/.test(tail![2]!) ? 2 : 1) : new Fraction(0);
    const each = run.amount.add(tails);
    return [...note.words.matchAll(PULLED)].map(([, id, one, gauge, digits, spelt]) => {
      const count = one ? new Fraction(1) : figureAt(note, id).value;
      const size = gauge ? figureAt(note, gauge).value.toString() : (digits ?? GAUGES[spelt!]!);
      return lineOf(note, size, count, each, `${show(run.amount)} + ${show(tails)} ft at the ends`);
    });
  });
}

const lineOf = (note: Said, gauge: string, count: Fraction, each: Fraction, length: string): ComputedLine => ({
  item: /\bth[hw]n\b/.exec(note.words)?.[0].concat(' wire') ?? 'wire',
  size: `${gauge} AWG`,
  specs: [],
  area: note.area,
  amount: count.mul(each),
  unit: 'ft',
  pack: null,
  stockUsed: false,
  working: `${length} = ${show(each)} ft; x ${show(count)} = ${show(count.mul(each))} ft`,
  assumptions: [],
  source: 'arithmetic from what was said',
  noteIds: [note.noteId],
});
