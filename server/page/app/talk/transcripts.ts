import { isCaptions } from '../../../../parser/transcript/captions.ts';
import { isStamped } from '../../../../parser/transcript/stamped.ts';

/** WebVTT, SubRip, or lines that begin with `[m:ss]`. */
export const isTimed = (text: string): boolean => isCaptions(text) || isStamped(text);

/** What the server takes as one note, in characters: about five hours of talk. */
export const longestNote = 256_000;

/** A file's words: UTF-8, UTF-16 where it says so in its first two bytes, else the old Western code page. */
export async function wordsIn(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** `3:07`, `1:02:40`: where in a recording. */
export function secondWords(at: number): string {
  const [hours, minutes, seconds] = [Math.floor(at / 3600), Math.floor(at / 60) % 60, Math.floor(at) % 60];
  const two = (n: number) => String(n).padStart(2, '0');
  return hours ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
}
