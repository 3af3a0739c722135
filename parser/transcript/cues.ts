import type { Span } from '../types.ts';

/** Words of a cue: `text` as said, standing for `start`..`end` of the file (longer there where a mark was spelt `&amp;`). */
export interface Piece extends Span {
  text: string;
}

/** One caption of a timed transcript. */
export interface Cue {
  /** Seconds from the beginning of the recording. */
  at: number;
  /** When it ends, in seconds, or null where the format does not say. */
  until: number | null;
  speaker: string | null;
  /** In order; white space stands between two of them only where a piece carries it. */
  pieces: Piece[];
}

/** One line of the file, without its line end. */
export interface Line extends Span {
  text: string;
}

/** The lines of a file; CRLF, LF and CR all end one, as WebVTT says. */
export function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (const match of text.matchAll(/[^\r\n]*(?:\r\n|\n|\r|$)/g)) {
    if (match.index === text.length && lines.length) break;
    const said = match[0].replace(/[\r\n]+$/, '');
    lines.push({ text: said, start: match.index, end: match.index + said.length });
  }
  return lines;
}

/** What a cue says. */
export const wordsOf = (cue: Cue): string => cue.pieces.map((p) => p.text).join('');
