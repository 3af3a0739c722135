import { lowered } from '../trade/words.ts';
import type { Token, TokenKind } from '../types.ts';

// One token a match: line end, word (apostrophes inside), number (fractions, decimals, joined by x or hyphen stay apart), mark.
const PIECE =
  /(\r\n?|\n)|((?<=[\d"'″′”’½¼¾])[xX×](?=\d)|\p{L}[\p{L}\p{M}\p{N}]*(?:['’]\p{L}+)*)|(\d+(?:,\d{3})*(?:\.\d+)?|\.\d+|[¼½¾⅐-⅞])|([^\s])/gu;

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
      word: kind === 'break' ? '\n' : lowered(said),
      start,
      end: start + said.length,
      spaced: start !== last || start === 0,
    });
    last = start + said.length;
  }
  return tokens;
}
