import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import { readNote } from '../../parser/index.ts';
import { localTime } from '../../parser/times/days.ts';
import { loadWordClass } from '../words/wordClass.ts';
import { factsLine } from './factsLine.ts';

/**
 * Reads notes from standard input, one JSON a line, and prints what each says, one JSON a line, in the same order.
 * With the path of a transcript (WebVTT, SubRip, or lines that begin with `[m:ss]`) it prints one line for that.
 */
const NoteLine = z.object({
  id: z.string(),
  saidAt: z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d/, 'saidAt: local wall time as 2026-05-12T15:20:00'),
  text: z.string(),
  areas: z.array(z.string()).optional(),
});

const wordClass = await loadWordClass();
let failed = false;
const file = process.argv[2];
if (file) process.stdout.write(`${JSON.stringify(transcript(file))}\n`);
else
  for await (const line of createInterface({ input: process.stdin })) {
    if (!line.trim()) continue;
    process.stdout.write(`${JSON.stringify(answer(line))}\n`);
  }
process.exitCode = failed ? 1 : 0;

/** A transcript has no date of its own: the file's is taken, in this machine's zone. */
function transcript(path: string): object {
  const id = basename(path);
  try {
    const saved = statSync(path).mtime;
    const saidAt = localTime(saved, Intl.DateTimeFormat().resolvedOptions().timeZone);
    return factsLine(id, readNote(readFileSync(path, 'utf8'), { saidAt, wordClass }));
  } catch (error) {
    failed = true;
    return { id, error: `cannot be read: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function answer(line: string): object {
  let id: unknown = null;
  try {
    const given: unknown = JSON.parse(line);
    id = typeof given === 'object' && given !== null && 'id' in given ? given.id : null;
    const note = NoteLine.parse(given);
    return factsLine(note.id, readNote(note.text, { saidAt: note.saidAt, areas: note.areas, wordClass }));
  } catch (error) {
    failed = true;
    const why =
      error instanceof z.ZodError
        ? error.issues.map((i) => `${i.path.join('.')}: ${i.message}`).join('; ')
        : String(error);
    return { id, error: `not a note: ${why}` };
  }
}
