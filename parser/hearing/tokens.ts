import { lowered } from '../trade/words.ts';
import type { Token, TokenKind } from '../types.ts';

// One token a match: line end, word (apostrophes inside), number (fractions, decimals, joined by x or hyphen stay apart), mark.
const PIECE =
  /(\r\n?|\n)|((?:i|you|he|she|it|that|this|they|we|who|what|there|here|where|how|these|those|which|y'all)['’]ll\b|['’]ll\b|(?<=[\d"'″′”’½¼¾])(?:[xX×]|ft)(?=\d)|\p{L}[\p{L}\p{M}\p{N}]*(?:['’](?!ll\b)\p{L}+)*)|(\d+(?:,\d{3})*(?:\.\d+)?|\.\d+|[¼½¾⅐-⅞])|([^\s])/giu;

/** "The casing'll do it": behind a thing's name a word of its own. */
const WILL = /^['’]ll$/i;

const KINDS: readonly TokenKind[] = ['break', 'word', 'number', 'mark'];

/** Cuts a note into words, numbers, marks and line breaks, each with its place in the text. Linear in the text's length. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let last = 0;
  for (const match of text.matchAll(PIECE)) {
    const start = match.index;
    const said = match[0];
    const kind = KINDS[match.slice(1).findIndex((group) => group !== undefined)] ?? 'mark';
    tokens.push({
      kind,
      text: said,
      word: kind === 'break' ? '\n' : WILL.test(said) ? 'will' : lowered(said),
      start,
      end: start + said.length,
      spaced: start !== last || start === 0,
    });
    last = start + said.length;
  }
  return tokens;
}
