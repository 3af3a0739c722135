import type { Measurement, Quantity } from '../../types.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

/** Readings of heat: in degrees without saying so. */
const HEAT =
  /\b(?:temp|temps|temperature|thermostat|water heater|superheat|subcool|subcooling|supply|return|hot side|hot water|mixing valve|air|delta)\b/;

/**
 * The unit of a reading: as said, or what such a thing is read in. "Put eighty pounds on it" tests a pipe in psi; a bare
 * figure in a metric note is in its metres or millimetres; "was .52, now .31" keeps the unit of the figure before.
 */
export function unitOf(
  talk: Talk,
  frame: Frame,
  at: number,
  of: string,
  q: Quantity,
  before: Measurement | undefined,
): string {
  const metric = talk.reading.quantities.some((other) => /^(?:mm|cm|m|C|kPa|sq m)$/.test(other.unit ?? ''));
  if (q.unit === 'lb') {
    const said = `${wordsOf(talk.frames[at - 1])} ${wordsOf(frame)}`;
    return /\b(?:held|hold|holds|holding|test|tested|air|pressure|pumped|charged|line|lines|gauge)\b|\bput\b.*\bon (?:it|them)\b/.test(
      said,
    )
      ? 'psi'
      : 'lb';
  }
  if (q.unit === 'deg' && HEAT.test(of)) return metric ? 'C' : 'F';
  if (q.unit) return q.unit;
  const value = q.value.valueOf();
  if (before?.unit && sameReading(talk, frame, of, q, before)) return before.unit;
  if (/\bstatic\b/.test(of) && value < 5) return 'in wc';
  if (HEAT.test(of) || (/\b(?:tub|shower|faucet|water|tap)\b/.test(of) && value >= 90)) return metric ? 'C' : 'F';
  if (/\b(?:moisture|humidity|rh)\b/.test(of)) return '%';
  if (/\b(?:pressure|gauge)\b/.test(of)) return 'psi';
  if (/\b(?:voltage|string|leg to leg|receptacle|outlet)\b/.test(of) && value >= 100) return 'V';
  if (metric && talk.reading.quantities.some((other) => other.unit === 'mm' || other.unit === 'm'))
    return q.group?.kind === 'pair' && value < 20 ? 'm' : 'mm';
  return q.group?.kind === 'pair' && q.value.d <= 2n && value >= 5 && value <= 60 && PLACES.test(of) ? 'ft' : 'in';
}

/** Places whose two bare sides are told in feet: "the room's twelve by fourteen" (common practice, no source). */
const PLACES =
  /\b(?:(?:bed|bath|living |dining |laundry |family )?rooms?|kitchen|deck|patio|porch|slab|yard|lawn|garage|driveway|basement|attic|shed|barn)$/;

/** A figure that goes on about the one before: "now .31", "spec 45", "I set it to 3.5". */
function sameReading(talk: Talk, frame: Frame, of: string, q: Quantity, before: Measurement): boolean {
  if (/[.;!?\n]\s/.test(talk.text.slice(before.end, frame.start))) return false;
  return (
    /^(?:now|from)$/.test(wordBefore(talk, q)) ||
    of === before.of ||
    /\b(?:spec|min|max|minimum|maximum|code|plate|tag|print|sticker|ticket)\b/.test(wordsOf(frame))
  );
}

const wordsOf = (frame: Frame | undefined) => (frame ? frame.chunks.map((c) => c.word).join(' ') : '');

const wordBefore = (talk: Talk, q: Quantity) => talk.reading.heard.tokens[q.from - 1]?.word ?? '';
