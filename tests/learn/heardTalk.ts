import { readFileSync } from 'node:fs';
import { readHalf } from '../score/lib/corpus.ts';

/** Words of an annotated note that sound like a name of the trade, and what was meant by them, judged by hand. */
export interface HeardTalk {
  start: number;
  end: number;
  heard: string;
  /** The name that was meant; null where the words mean what they say. */
  meant: string | null;
  /** Another spelling or form of what they say: no repair, but no harm either. */
  also?: string;
}

/** The annotated notes that may be looked at, with the words in them that were judged (`fixtures/hearing/talk.jsonl`). */
export function heardTalk(): { text: string; judged: HeardTalk[] }[] {
  const rows = readFileSync(new URL('../../fixtures/hearing/talk.jsonl', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { text: string; heard: string; meant: string | null; also?: string });
  return readHalf('seen').map(({ text }) => ({
    text,
    judged: rows.flatMap((row) => {
      const at = text.indexOf(row.text);
      if (at < 0) return [];
      // Said twice in one stretch, it is meant alike.
      const said = new RegExp(`(?<![a-z])${row.heard.replace(/[^\w\s']/g, '.')}(?![a-z])`, 'gi');
      return [...row.text.matchAll(said)].map(({ index }) => ({
        start: at + index,
        end: at + index + row.heard.length,
        heard: row.heard,
        meant: row.meant,
        also: row.also,
      }));
    }),
  }));
}

/** The letters alone. */
export const squeezed = (text: string) => text.toLowerCase().replace(/[^a-z]/g, '');

/** What a repair of a judged note is worth: null where nobody has judged these words yet. */
export function judge(
  judged: readonly HeardTalk[],
  repair: { start: number; end: number; meant: string },
): 'right' | 'harmless' | 'wrong' | null {
  const own = judged.find(({ start, end }) => repair.start < end && repair.end > start);
  if (!own) return null;
  const [meant, made] = [squeezed(own.meant ?? ''), squeezed(repair.meant)];
  if (own.meant && (made.includes(meant) || meant.includes(made))) return 'right';
  return squeezed(own.also ?? '') === made ? 'harmless' : 'wrong';
}
