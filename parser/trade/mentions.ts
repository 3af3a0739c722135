import type { TermMention, Token, Vocabulary } from '../types.ts';

/** Trade words in a note, longest first, none overlapping another. */
export function mentionsIn(tokens: readonly Token[], text: string, vocabulary: Vocabulary): TermMention[] {
  const out: TermMention[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found = vocabulary.match(tokens, i);
    if (!found || isHalved(tokens, i, found.term.name)) {
      i++;
      continue;
    }
    const [start, end] = [tokens[i]!.start, tokens[found.until - 1]!.end];
    out.push({ term: found.term, from: i, until: found.until, start, end, quote: text.slice(start, end) });
    i = found.until;
  }
  return out;
}

/** `1/2x4`: half an inch by four, and no two by four. */
const isHalved = (tokens: readonly Token[], i: number, name: string) =>
  /^\d/.test(name) && tokens[i - 1]?.text === '/' && !tokens[i]!.spaced;
