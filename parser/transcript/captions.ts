import { type Cue, type Line, linesOf } from './cues.ts';
import { type IsName, saidIn } from './payload.ts';

/**
 * The timing line of a caption. WebVTT writes `[h]h:mm:ss.ttt --> …` with hours left out at will (W3C WebVTT,
 * "WebVTT timestamp"); SubRip writes a comma before the thousandths (no standard; common practice).
 */
const TIMING =
  /^[ \t]*(?:(\d{1,4}):)?([0-5]?\d):([0-5]\d)[.,](\d{3})[ \t]*-->[ \t]*(?:(\d{1,4}):)?([0-5]?\d):([0-5]\d)[.,](\d{3})(?:[ \t].*)?$/;
/** A WebVTT file begins so, a byte order mark before it or not (W3C WebVTT, "WebVTT file body"). */
const HEAD = /^\uFEFF?WEBVTT(?=[ \t\r\n]|$)/;

export const isCaptions = (text: string): boolean =>
  HEAD.test(text) || (text.includes('-->') && linesOf(text).some((line) => TIMING.test(line.text)));

/** Reads WebVTT and SubRip: what stands under a timing line, to the next blank line. Notes, styles and regions are not talk. */
export function captionsIn(text: string, isName: IsName): Cue[] {
  const lines = linesOf(text);
  const cues: Cue[] = [];
  let lastSaid: string | null = null;
  for (let i = 0; i < lines.length; i++) {
    const timing = TIMING.exec(lines[i]!.text);
    if (!timing) continue;
    const body: Line[] = [];
    while (i + 1 < lines.length && lines[i + 1]!.text.trim() && !lines[i + 1]!.text.includes('-->'))
      body.push(lines[++i]!);
    // A number alone before the next timing belongs to that cue, where the blank line is missing.
    if (i + 1 < lines.length && lines[i + 1]!.text.includes('-->') && /^\d+$/.test(body.at(-1)?.text.trim() ?? ''))
      body.pop();
    // Live captions roll: the line said last stands again on top of the next cue.
    const fresh = body.filter((line, k) => k > 0 || body.length === 1 || line.text.trim() !== lastSaid);
    const again = body.length === 1 && body[0]!.text.trim() === lastSaid;
    lastSaid = body.at(-1)?.text.trim() ?? lastSaid;
    if (!again) cues.push(...saidIn(fresh, { at: seconds(timing, 1), until: seconds(timing, 5) }, isName));
  }
  return cues;
}

const seconds = (m: RegExpExecArray, at: number): number =>
  Number(m[at] ?? 0) * 3600 + Number(m[at + 1]) * 60 + Number(m[at + 2]) + Number(m[at + 3]) / 1000;
