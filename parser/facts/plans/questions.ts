import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

const ASKS =
  /^(?:so |and |ok |okay )*(?:what|what's|whats|which|where|where's|when|who|who's|how many|how much|how long)\b/;

/** True for a clause of a question put with its mark: "which side does the panel go on?"; those to the list are cut out before. */
export function isQuestion({ text, frames }: Talk, frame: Frame): boolean {
  const first = frames.find((f) => f.sentence === frame.sentence)!;
  const last = frames.findLast((f) => f.sentence === frame.sentence)!;
  const marked = /^\W*\?/.test(text.slice(last.end, last.end + 2));
  return marked && ASKS.test(text.slice(first.start, first.end).toLowerCase());
}
