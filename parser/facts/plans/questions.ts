import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

const ASKS =
  /^(?:so |and |ok |okay )*(?:what|what's|whats|which|where|where's|when|who|who's|how many|how much|how long)\b/;
/** Asked of the list itself, in a note that has no question mark. */
const OF_LIST =
  /^(?:so |and |ok |okay )*(?:what(?:'s|s| is) (?:left|next|else|still|open|on the list)|what (?:am|are|do|should|can) (?:i|we)\b|what else)/;

/** True for a clause of a question: "what's left before I go home?", "what do I need to get for Monday". */
export function isQuestion({ text, frames }: Talk, frame: Frame): boolean {
  const first = frames.find((f) => f.sentence === frame.sentence)!;
  const said = (f: Frame) => text.slice(f.start, f.end).toLowerCase();
  if (OF_LIST.test(said(frame))) return true;
  const last = frames.findLast((f) => f.sentence === frame.sentence)!;
  const marked = /^\W*\?/.test(text.slice(last.end, last.end + 2));
  return marked && ASKS.test(said(first));
}
