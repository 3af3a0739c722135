import { isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, phrase } from '../talk.ts';
import { cutAtTime, type Plan, resolve, type Told } from './told.ts';

/** What may harm a wait, a find or a person, besides the trade's own work. */
const MEDDLES =
  /^(?:touch|run|use|turn|flip|energize|move|walk|step|stand|lean|load|drive|park|open|close|cover|bury|board|disturb|block|light|plug|reset|throw|flush)$/;
const UNTIL = /^(?:till|til|until|before|b4|unless)$/;
const NOT_TO = /^(?:don't|dont|nobody|no one)$/;
/** How something is kept or left. */
const OFF = /^(?:off|out|away|clear|shut|closed|open|dry|covered|uncovered)$/;

/**
 * An order to leave something be, which stands until it is lifted: "don't cover it", "nobody touch that panel", "keep the
 * kids off the stairs till we know", "leave the breaker off till Ray comes".
 */
export function standingOrder(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const first = chunks[0]!.word === 'do' && chunks[1]?.word === 'not' ? 1 : 0;
  if (first || NOT_TO.test(chunks[0]!.word)) return notTo(talk, frame, at, first + 1);
  const keeps = frame.predicate === 'imperative' && /^(?:keep|leave)$/.test(frame.lemma ?? '');
  if (!keeps || !frame.rest.some((c, k) => k > 0 && OFF.test(c.word))) return null;
  const task = phrase(cutAtTime(resolve(talk, frame.rest, at)), KEPT).replace(/^the /, '');
  return task.includes(' ') ? { task: `${frame.lemma} ${task}`, who: null, confidence: 0.7 } : null;
}

/** True for the task of such an order. */
export const isStanding = (task: string): boolean =>
  /^don't \S|^(?:keep|leave) .* (?:off|out|away|clear|shut|closed|open|dry|covered|uncovered)\b/.test(task);

/** Small words without which such an order says the opposite. */
const KEPT = new Set(['off', 'out', 'of', 'up', 'all']);

function notTo(talk: Told, frame: Frame, at: number, from: number): Plan | null {
  const { chunks } = frame;
  const verb = chunks[from]?.verb;
  if (!verb || !(verb.use === 'work' || MEDDLES.test(verb.lemma))) return null;
  // "Don't caulk till Monday" is work with a day (`heldBack`).
  if (chunks.some((c) => UNTIL.test(c.word) || c.time)) return null;
  const object = chunks.slice(from + 1);
  if (!object.some((c) => isNounTerm(c)) && !(object.length > 0 && isPointer(object))) return null;
  if (isPerson(object)) return null;
  const found = isPointer(object) && talk.problems.findLast((p) => p.start < frame.start)?.thing;
  const thing = found || phrase(cutAtTime(resolve(talk, object, at)), KEPT);
  return thing ? { task: `don't ${verb.lemma} ${thing}`, who: null, confidence: 0.7 } : null;
}

const DENIES = /^(?:not|won't|wont|never|ain't)$/;

/** "I'm not sanding it", "we won't tile the niche", "nobody's painting that": work that somebody says they will not do. */
export function isDenied({ chunks, negative, verbAt }: Frame): boolean {
  if (!negative || chunks.some((c) => UNTIL.test(c.word) || c.time || /^(?:yet|sure|done|finished)$/.test(c.word)))
    return false;
  const who = chunks[0]!.word;
  if (/^nobody(?:'s)?$/.test(who)) return true;
  const k = chunks.findIndex((c) => DENIES.test(c.word));
  if (k < 0 || k > 3 || !isPerson(chunks.slice(0, Math.max(1, k)))) return false;
  const verb = chunks.slice(k + 1).find((c) => c.verb !== undefined && !/^(?:gonna|going)$/.test(c.word));
  return verb !== undefined && verbAt >= 0 && (verb.verb!.forms.has('base') || verb.verb!.forms.has('ing'));
}
