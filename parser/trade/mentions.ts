import type { TermMention, Token, Vocabulary } from '../types.ts';

/** Trade words in a note, longest first, none overlapping another. */
export function mentionsIn(tokens: readonly Token[], text: string, vocabulary: Vocabulary): TermMention[] {
  const out: TermMention[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found = vocabulary.match(tokens, i);
    if (!found) {
      i++;
      continue;
    }
    const [start, end] = [tokens[i]!.start, tokens[found.until - 1]!.end];
    out.push({ term: found.term, from: i, until: found.until, start, end, quote: text.slice(start, end) });
    i = found.until;
  }
  return out;
}
