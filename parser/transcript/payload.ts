import type { Cue, Line, Piece } from './cues.ts';

// A voice span, any other tag (timestamps, and SubRip's `{\an8}`), a character reference, or plain words. The lengths
// are bounded so that a file of opened and never closed tags is still read in one pass.
const PART =
  /<v(?:\.[^\s>.]{1,40}){0,8}[ \t]+([^>\n]{0,80})>|(<\/?[a-z\d.][^>\n]{0,200}>|<\/>|\{\\[^}\n]{0,80}\})|(&(?:[a-z]{1,8}|#\d{1,7}|#x[\da-f]{1,6});)|[^<&{]+|[<&{]/gi;

const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  lrm: '',
  rlm: '',
};

/** "Dana:", "SPEAKER_01:", "Mr. Voss:" before the words. */
const LABEL = /^(?:>>\s*)?((?:\p{Lu}[\p{L}\p{M}.'’-]*|speaker)(?:[ _](?:\p{Lu}[\p{L}\p{M}.'’-]*|\d+)){0,2}):\s+/u;
/** The dash or chevrons that captions set before a change of speaker. */
const CHANGE = /^(?:-|–|—|>>)\s*(?=\p{L})/u;

/** Says whether the words before a colon can be a person's name; "Vestry: two bags" names a room. */
export type IsName = (label: string) => boolean;

/**
 * The words of one cue with their speakers, markup taken off. A cue in which the speaker changes gives several,
 * all with the cue's times.
 */
export function saidIn(lines: readonly Line[], times: Pick<Cue, 'at' | 'until'>, isName: IsName): Cue[] {
  const cues: Cue[] = [];
  let cue: Cue | null = null;
  const turn = (speaker: string | null) => {
    cue = { ...times, speaker, pieces: [] };
    cues.push(cue);
    return cue;
  };
  for (const line of lines) {
    let inLine = false;
    for (const match of line.text.matchAll(PART)) {
      const start = line.start + match.index;
      if (match[1] !== undefined) {
        turn(match[1].trim() || null);
        continue;
      }
      if (match[2] !== undefined) continue;
      const text = match[3] ? characterOf(match[3]) : match[0];
      let piece: Piece = { text, start, end: start + match[0].length };
      if (!inLine && piece.text.trim()) {
        const label = LABEL.exec(piece.text);
        const change = CHANGE.exec(piece.text);
        if (label && isName(label[1]!)) {
          turn(label[1]!);
          piece = without(piece, label[0].length);
        } else if (change) {
          turn(null);
          piece = without(piece, change[0].length);
        }
      }
      const into: Cue = cue ?? turn(null);
      const last = into.pieces.at(-1);
      // A line end inside a cue is only where the caption wraps.
      if (!inLine && last) into.pieces.push({ text: ' ', start: last.end, end: piece.start });
      if (piece.text) into.pieces.push(piece);
      inLine = true;
    }
  }
  return cues.filter((c) => c.pieces.some((p) => p.text.trim()));
}

const without = (piece: Piece, count: number): Piece => ({
  ...piece,
  text: piece.text.slice(count),
  start: piece.start + count,
});

function characterOf(reference: string): string {
  const name = reference.slice(1, -1).toLowerCase();
  if (!name.startsWith('#')) return NAMED[name] ?? reference;
  const code = name.startsWith('#x') ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  return code > 0 && code <= 0xffff && !(code >= 0xd800 && code <= 0xdfff) ? String.fromCharCode(code) : reference;
}
