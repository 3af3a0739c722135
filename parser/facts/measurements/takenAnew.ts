import type { Measurement } from '../../types.ts';
import type { Talk } from '../talk.ts';

/** Words that take back what was said. */
const BACK = /\b(?:no,? wait|wait,? no|hold on|scratch that|correction|my mistake|sorry|actually|i mean)\b/i;
/** Words behind a figure that say the first was read wrong. */
const MISREAD =
  /^[\s,.;-]*(?:i|we) (?:read (?:the tape|it|that) wrong|misread|mismeasured|measured (?:it |that )?wrong)/i;
/** So many characters back a figure may stand that is taken anew. */
const REACH = 220;

/**
 * Readings without those that were taken anew in the same breath: "opening is forty eight and a half by eighty two ... no
 * wait, opening is fifty and a half" leaves fifty and a half by eighty two, of the first one's name.
 */
export function takenAnew(talk: Talk, all: readonly Measurement[]): Measurement[] {
  const gone = new Set<Measurement>();
  const out = all.map((reading, k) => {
    const before = all
      .slice(0, k)
      .filter(
        (m) => !gone.has(m) && m.unit === reading.unit && reading.start - m.start < REACH && isSameThing(m, reading),
      )
      .sort((a, b) => Math.abs(a.value - reading.value) - Math.abs(b.value - reading.value))[0];
    if (!before || before.value === reading.value) return reading;
    const between = talk.text.slice(before.end, reading.start);
    if (!BACK.test(between) && !MISREAD.test(talk.text.slice(reading.end))) return reading;
    gone.add(before);
    return { ...reading, of: before.of };
  });
  return out.filter((m) => !gone.has(m));
}

/** "Back bedroom closet opening" and "opening": the second says no more than the first. */
const isSameThing = (first: Measurement, second: Measurement) =>
  second.of.split(' ').every((word) => first.of.split(' ').includes(word));
