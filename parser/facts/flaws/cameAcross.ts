import { type Chunk, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { nounPhraseFrom, phrase } from '../talk.ts';
import { isNegative } from '../words.ts';
import { type Flaw, placeAfter, skipDeterminer } from './flaw.ts';

/** Words that tell that somebody met with something, and did nothing to it. */
const FOUND =
  /^(?:(?:i|we|he|she|they|i've|we've|also|just|then|and|the|plumber|electrician|inspector|guys) ){0,3}(?:found|find|uncovered|discovered|came across|come across|ran into|ran across|stumbled on)\b/;
const THERE = /^(?:there's|there is|there are|there're|there was|there were|they've got|it's got)\b/;

/** How a thing is that nobody should find behind a wall. */
const ILL =
  /^(?:old|ancient|bare|exposed|live|hot|cloth|undersized|ungrounded|unprotected|uninsulated|abandoned|illegal|makeshift|homemade|taped|spliced|hidden|buried|open|bad|rusty|crusty|black|green|active|aluminum|galvanized|lead|asbestos|polybutylene|unmarked|unvented|unsupported|loose|dead|double-tapped)$/;

/** What is amiss by what it is, wherever it is found: old ways of wiring, piping and insulating, and what eats a house. Common practice, no source. */
const HAZARD =
  /\b(?:knob (?:and|&|n) tube|asbestos|vermiculite|aluminum wir(?:e|ing)|cloth wir(?:e|ing)|lead (?:pipe|paint|line)|polybutylene|termites?|carpenter ants|powderpost|bootleg ground|flying splice|dry rot|rat droppings|mouse droppings)\b/;

/** What carries current, gas, water or smoke: old or bare, it is amiss even where it is only said to be there. */
const CARRIES =
  /\b(?:wires?|wiring|splices?|cables?|romex|bx|junction box|outlets?|receptacles?|breakers?|fuses?|fuse box|panel|conductors?|neutral|pipes?|galvanized|galv|gas line|water line|drain|flue|valve|paint)$/;

/** Something to be used, or where it is kept: found, and welcome. */
const WELCOME =
  /\b(?:can use|could use|to use|to match|that fits|that'll work|will work|left ?over|spare|extra)\b|\b(?:in|on|at) (?:the|my|his) (?:garage|truck|van|shop|trailer|shed|bin|bucket|pile|store|yard|rack|shelf)\b/;

/** "Found an old splice behind the paneling", "there's bare wire in the ceiling": met with, and open until told otherwise. */
export function cameAcross({ chunks, start, end, negative }: Frame): Flaw[] {
  const said = chunks.map((c) => c.word).join(' ');
  const found = FOUND.test(said);
  if (!(found || THERE.test(said)) || WELCOME.test(said)) return [];
  const span = { start, end };
  const flaw = (thing: Chunk[], defect: string): Flaw[] => [
    { thing, defect, span, rule: 'problem/came-across', confidence: 0.7 },
  ];
  const hazard = negative ? null : HAZARD.exec(said);
  if (hazard) {
    const from = chunkAt(chunks, hazard.index);
    const until = chunkAt(chunks, hazard.index + hazard[0].length - 1) + 1;
    return flaw([...chunks.slice(from, until), ...placeAfter(chunks, until - 1)], hazard[0]);
  }
  const k = chunks.findIndex((c, i) => i > 0 && ILL.test(c.word) && !isNegative(chunks[i - 1]!.word));
  if (k < 0) return [];
  const noun = chunks.slice(k, nounUntil(chunks, k));
  const head = noun.at(-1);
  if (noun.length < 2 || !head || chunks[k + noun.length]?.word === 'of') return [];
  const carries = CARRIES.test(phrase(noun));
  const place = placeAfter(chunks, k + noun.length - 1);
  if (!found && !(carries && (chunks[k]!.word !== 'old' || place.length))) return [];
  if (!isNounTerm(head) && !carries) return [];
  return flaw([...noun, ...place], phrase(noun));
}

const nounUntil = (chunks: readonly Chunk[], from: number): number =>
  Math.max(from + 1, nounPhraseFrom(chunks, skipDeterminer(chunks, from)));

/** Which piece holds an offset of the pieces' words joined by spaces. */
function chunkAt(chunks: readonly Chunk[], offset: number): number {
  let length = 0;
  return chunks.findIndex(({ word }) => {
    length += word.length + 1;
    return length > offset;
  });
}

/** True where a clause only tells that something was met with. */
export const isMetWith = ({ chunks }: Frame): boolean => FOUND.test(chunks.map((c) => c.word).join(' '));
