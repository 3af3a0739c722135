import { type Chunk, isCopula, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson } from '../talk.ts';
import { isWorkOn } from '../workNotHarm.ts';
import { isNegativeBefore } from './flaw.ts';

/** Which word of a clause names a flaw: one of the vocabulary, or a plain one for harm, a mark or a bad thing; -1 where none does. */
export const flawWordIn = (frame: Frame): number =>
  frame.chunks.findIndex(
    (c, i) =>
      (c.term?.kind === 'defect' ||
        isFlawNoun(frame.chunks, i) ||
        isMark(frame, i) ||
        isHarmed(frame, i) ||
        isBad(frame.chunks, i)) &&
      !isNegativeBefore(frame.chunks, i) &&
      !isDeedNoun(frame.chunks, i) &&
      !isWorkOn(frame.chunks, i),
  );

/** Harm told as a state, in words that are also work: "joists are notched to bits", "the box is buried", "floor vent painted over". */
const HARMED =
  /^(?:notched|charred|offset|buried|disconnected|unhooked|unplugged|severed|pierced|hacked|butchered|mangled|bled|floated|flooded|faults?|bounces?|sagged|dumps?|pools?|lapped|chewed|bitten|misplaced|mixed up|lifted|shifted|slipped|fallen|frayed|reversed|overcut|gapped|choked|starved|failing|unfinished|exposed|bare)$/;

function isHarmed(frame: Frame, k: number): boolean {
  const { chunks } = frame;
  const word = chunks[k]!.word;
  const subject = frame.subject.length > 0 && !isPerson(frame.subject);
  if (word === 'over' && /^(?:painted|drywalled|tiled|mudded|plastered|caulked)$/.test(chunks[k - 1]?.word ?? ''))
    return true;
  if (word === 'back' && chunks[k - 1]?.word === 'set' && chunks[k + 1]?.quantity) return true;
  if (/^(?:uphill|backwards?)$/.test(word) && subject) return true;
  if (word === 'open' && chunks[k - 1]?.word === 'seam') return true;
  if (
    word === 'out' &&
    /^(?:lights?|bulbs?|lamps?|pilot|power)$/.test(frame.subject.find(isNounTerm)?.word ?? '') &&
    k === chunks.length - 1
  )
    return true;
  if (
    word === 'running' &&
    frame.predicate === 'copula' &&
    frame.subject.some((c) => /^(?:toilet|toilets|urinal|commode|faucet|tap)(?:'s)?$/.test(c.word))
  )
    return true;
  if (
    word === 'out' &&
    frame.predicate === 'none' &&
    k === chunks.length - 1 &&
    chunks.slice(0, k).some((c) => /\b(?:lights?|bulbs?|lamps?|pilot)\b/.test(c.word))
  )
    return true;
  if (
    word === 'off' &&
    isCopula(chunks[k - 1]) &&
    k === chunks.length - 1 &&
    frame.predicate === 'copula' &&
    subject &&
    !frame.subject.some((c) =>
      /^(?:gas|water|power|heat|breakers?|main|lights?|fans?|pump|furnace|ac|heater|it|that|everything)(?:'s)?$/.test(
        c.word,
      ),
    )
  )
    return true;
  if (word === 'low' && k === chunks.length - 1 && frame.predicate === 'none' && chunks.some(isNounTerm)) return true;
  if (
    /^(?:way|right)$/.test(word) &&
    /^(?:in the way|right where)$/.test(
      word === 'way'
        ? chunks
            .slice(k - 2, k + 1)
            .map((c) => c.word)
            .join(' ')
        : `${word} ${chunks[k + 1]?.word}`,
    )
  )
    return true;
  return (
    HARMED.test(word) &&
    chunks[k]!.kind !== 'quantity' &&
    (subject || (frame.predicate === 'none' && k > 0)) &&
    k >= frame.verbAt
  );
}

/** "There's a bad connector", "the ground is faulty": but "not bad" and "a bad day". */
const isBad = (chunks: readonly Chunk[], k: number) =>
  /^(?:bad|faulty|defective|sketchy|janky|iffy)$/.test(chunks[k]!.word) &&
  (k === chunks.length - 1 ||
    isNounTerm(chunks[k + 1]) ||
    (chunks[k + 1]?.kind === 'word' && /^(?:a|some|no|the)$/.test(chunks[k - 1]?.word ?? ''))) &&
  !/^(?:day|days|news|weather|idea|shape|luck|back|traffic|guy|time|mood|for)$/.test(chunks[k + 1]?.word ?? '') &&
  !/^(?:so|too|not|half)$/.test(chunks[k - 1]?.word ?? '');

/** "Ceiling stain in the hall", "gap at the tray": an entry of a list that names a mark and its place. */
function isMark({ chunks, predicate }: Frame, k: number): boolean {
  if (predicate !== 'none' || !/^(?:in|on|at|by|behind|under|along|around|near)$/.test(chunks[k + 1]?.word ?? ''))
    return false;
  const word = chunks[k]!.word;
  if (/^stains?$/.test(word)) return /^(?:ceiling|wall|water|floor|carpet|rust)$/.test(chunks[k - 1]?.word ?? '');
  return (
    /^(?:holes?|gaps?|marks?|dents?|bumps?|humps?|scratch|scratches|gouges?)$/.test(word) && !chunks.some((c) => c.time)
  );
}

/** "That stain on the ceiling", "the wall have hole", "the beam has a crown in it": a mark or shape where none should be. */
function isFlawNoun(chunks: readonly Chunk[], k: number): boolean {
  if (
    !/^(?:stains?|holes?|spots?|marks?|dents?|humps?|bumps?|bulges?|rocks?|gaps?|crowns?|dips?|twist|bow|belly|lumps?|voids?|bubbles?|lines?|streaks?|waves?|ripples?|ridges?|lip|step|odor|smell|hum|draft|splice|rub)$/.test(
      chunks[k]!.word,
    )
  )
    return false;
  const before = chunks
    .slice(Math.max(0, k - 4), k)
    .map((c) => c.word)
    .join(' ');
  if (
    /\b(?:has|have|had|got|there's|theres|there is|there are|with a)\b/.test(before) &&
    !/^(?:screw|saw|plug|ups?)$/.test(chunks[k + 1]?.word ?? '') &&
    !/\bto\b/.test(before)
  )
    return (
      /^(?:holes?|gaps?|stains?|dents?|humps?|bumps?|bulges?|crowns?|dips?|twist|bow|belly|lumps?|voids?|bubbles?|streaks?|waves?|ripples?|ridges?|lip|odor|draft|marks?)$/.test(
        chunks[k]!.word,
      ) || /^(?:in|on|behind|by|under|at)$/.test(chunks[k + 1]?.word ?? '')
    );
  return (
    /^(?:in|on|behind|by|under|at)$/.test(chunks[k + 1]?.word ?? '') &&
    /\b(?:that|a|some|big|is|is big)\b/.test(before) &&
    /^(?:stains?|holes?|spots?|marks?|dents?|humps?|bumps?|bulges?|rocks?)$/.test(chunks[k]!.word)
  );
}

/** "Leak test", "crack filler", "short list": the word is part of a name or a deed. */
const isDeedNoun = (chunks: readonly Chunk[], k: number) =>
  /^(weekend|test|tests|tested|filler|isolation|repair|detector|kit)$/.test(chunks[k + 1]?.word ?? '') ||
  // "Dead plumb", "flat dead level": very.
  (chunks[k]!.word === 'dead' &&
    /^(?:plumb|level|flat|square|on|nuts|center|straight|even)$/.test(chunks[k + 1]?.word ?? ''));
