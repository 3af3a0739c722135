import type { Chunk } from './chunks.ts';
import { type Cut, cutBefore } from './cuts.ts';

/** A stretch of talk with one thing to say, before its grammar is laid open. */
export interface Stretch {
  chunks: Chunk[];
  joinedBy: 'start' | 'stop' | 'comma' | Cut['by'];
  sentence: number;
}

const STOPS = new Set(['.', ';', '!', '?', '•', '*', '·', '|']);

/**
 * Divides talk into clauses. Marks divide where they are; run-on dictation is divided where a new subject or a new
 * order begins after the clause has said its thing.
 */
export function splitClauses(chunks: readonly Chunk[], places?: ReadonlySet<number>): Stretch[] {
  const out: Stretch[] = [];
  let current: Chunk[] = [];
  let joinedBy: Stretch['joinedBy'] = 'start';
  let sentence = 0;
  const close = (next: Stretch['joinedBy']) => {
    if (current.length) out.push({ chunks: current, joinedBy, sentence });
    current = [];
    joinedBy = next;
  };
  for (let i = 0; i < chunks.length; i++) {
    const chunk = chunks[i]!;
    if (
      chunk.word === '.' &&
      /^(?:mrs?|ms|dr|st|approx|no)$/.test(chunks[i - 1]?.word ?? '') &&
      chunks[i + 1]?.kind === 'word'
    )
      continue;
    if (chunk.kind === 'break' || (chunk.kind === 'mark' && STOPS.has(chunk.word))) {
      close('stop');
      sentence++;
      continue;
    }
    if (
      chunk.kind === 'mark' &&
      (chunk.word === ':' || chunk.word === '-' || chunk.word === '–' || chunk.word === '—')
    ) {
      // "BR3 closet: R13 batts", "closer slams - adjusted"; a hyphen without blanks joins.
      const spaced = chunks[i + 1] !== undefined && chunks[i + 1]!.start > chunk.end;
      if (
        (chunk.word === ':' && chunks[i - 1]?.word !== 're') ||
        (spaced && (i === 0 || chunks[i - 1]!.end < chunk.start)) ||
        chunk.word === '—'
      ) {
        close(chunk.word === ':' ? 'stop' : 'comma');
        continue;
      }
    }
    if (chunk.kind === 'mark' && chunk.word === ',') {
      close('comma');
      continue;
    }
    // "Off track (rehung)": what was done about it, in brackets.
    if (
      chunk.word === '(' &&
      chunks[i + 1]?.verb?.forms.has('past') &&
      chunks.slice(i + 2, i + 5).some((c) => c.word === ')')
    ) {
      close('comma');
      continue;
    }
    if (chunk.kind === 'mark' && (chunk.word === '"' || chunk.word === '“' || chunk.word === '”')) continue;
    if (places?.has(chunk.start)) close('run-on');
    if (current.length) {
      const cut = cutBefore(chunks, i, current);
      if (cut) {
        if (cut.back) {
          const moved = current.splice(current.length - cut.back);
          close(cut.by);
          current = moved;
        } else close(cut.by);
      }
    }
    current.push(chunk);
  }
  close('stop');
  return out;
}
