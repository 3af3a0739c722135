import { type Cue, type Line, linesOf } from './cues.ts';
import { type IsName, saidIn } from './payload.ts';

/** `[m:ss]` or `[h:mm:ss]` before the words of a line. */
const STAMP = /^\s*\[(?:(\d{1,3}):)?(\d{1,3}):([0-5]\d)(?:[.,]\d{1,3})?\][ \t]*/;

/** A first line with a stamp, or two such lines anywhere, make a transcript of plain text. */
export function isStamped(text: string): boolean {
  if (!text.includes('[')) return false;
  const lines = linesOf(text).filter((line) => line.text.trim());
  return STAMP.test(lines[0]?.text ?? '') || lines.filter((line) => STAMP.test(line.text)).length > 1;
}

/** Reads lines that begin with their time; a line without one goes on with what was being said. */
export function stampedIn(text: string, isName: IsName): Cue[] {
  const cues: Cue[] = [];
  let at = 0;
  let body: Line[] = [];
  const close = () => {
    if (body.length) cues.push(...saidIn(body, { at, until: null }, isName));
    body = [];
  };
  for (const line of linesOf(text)) {
    const stamp = STAMP.exec(line.text);
    if (stamp) {
      close();
      at = Number(stamp[1] ?? 0) * 3600 + Number(stamp[2]) * 60 + Number(stamp[3]);
    }
    const from = stamp?.[0].length ?? 0;
    if (line.text.slice(from).trim())
      body.push({ text: line.text.slice(from), start: line.start + from, end: line.end });
  }
  close();
  return cues;
}
