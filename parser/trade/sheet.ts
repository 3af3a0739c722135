import type { Term, TermKind } from '../types.ts';

/**
 * A sheet of trade words of one kind, one term a line, its parts after the name in any order, one blank after each mark:
 * `name; other, other; ~what dictation writes; @purchase units; +tools and small parts`.
 */
export interface Sheet {
  kind: TermKind;
  counter?: string;
  lines: string;
}

const PARTS = { '~': 'misheard', '@': 'soldBy', '+': 'bring' } as const;

export function termsOf({ kind, counter, lines }: Sheet): Term[] {
  return lines.split('\n').map((line) => {
    const [name = '', ...parts] = line.split('; ');
    const term: Term = counter ? { name, kind, counter } : { name, kind };
    for (const part of parts) {
      const marked = PARTS[part[0] as keyof typeof PARTS];
      term[marked ?? 'also'] = (marked ? part.slice(1) : part).split(', ');
    }
    return term;
  });
}
