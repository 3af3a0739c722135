import { type Cue, type Piece, wordsOf } from './cues.ts';

/** A stretch of one person's talk without a pause. */
export interface Passage {
  text: string;
  at: number;
  until: number;
  speaker: string | null;
  /** Where each piece stands in `text`, with the second at which its cue begins. */
  pieces: (Piece & { from: number; at: number })[];
}

/** Silence in seconds after which somebody speaks of something else. */
const PAUSE = 2.5;
/** A passage this long, in seconds, ends at the next full stop; twice this long, with its cue. */
const LONG = 60;
/** As long in letters, for files whose times stand still. */
const LETTERS = 2000;
/** Words a second in ordinary talk; the end of a cue that does not say it is reckoned from this. Common practice, no source. */
const PACE = 2.5;

/** "Yeah", "mm-hm", "right, okay": said while another speaks, it neither cuts his talk nor adds to it. */
const NODS =
  /^[\s,.!?…-]*(?:(?:yeah|yep|yes|yup|no|nope|nah|mm|mhm|hmm|uh|huh|hm|um|oh|ah|right|okay|ok|sure|good|great|nice|cool|got it|alright|all right|wow|exactly|true|fair enough|sounds good|perfect|thanks|thank you|please|cheers|i see|i know|you bet)\b[\s,.!?…-]*)*$/i;

/** Joins cues into talk and cuts it where the speaker changes, falls silent, or has talked long enough. */
export function passagesOf(cues: readonly Cue[]): Passage[] {
  const passages: Passage[] = [];
  let open: Passage | null = null;
  for (const cue of cues) {
    const words = wordsOf(cue);
    if (words.length < 80 && NODS.test(words)) continue;
    const until = cue.until ?? cue.at + words.split(/\s+/).length / PACE;
    if (!open || cutsBefore(open, cue)) {
      open = { text: '', at: cue.at, until, speaker: cue.speaker, pieces: [] };
      passages.push(open);
    }
    open.until = Math.max(open.until, until);
    if (open.text && !/\s$/.test(open.text)) open.text += ' ';
    for (const piece of cue.pieces) {
      open.pieces.push({ ...piece, from: open.text.length, at: cue.at });
      open.text += piece.text;
    }
  }
  return passages;
}

function cutsBefore(open: Passage, cue: Cue): boolean {
  const length = cue.at - open.at;
  return (
    cue.speaker !== open.speaker ||
    cue.at < open.at ||
    cue.at - open.until > PAUSE ||
    length > 2 * LONG ||
    open.text.length > LETTERS ||
    (length > LONG && /[.?!]\s*$/.test(open.text))
  );
}
