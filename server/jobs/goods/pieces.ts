import { stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { numberOf } from '../said/numbers.ts';

/** Where the next clause of a list begins: "job takes three". */
const CLAUSE =
  /^[a-z]+ (?:takes|needs|wants)\b|^(?:i|we|he|she|they|it|that's|so|but|still|need|gonna|only|which|where|because|cause|if|when|then|him|put|is|was)\b/;

/** A piece that says nothing but how it is packed: "3 bags", "all four". */
export const packOf = ({ words }: Piece): string | null =>
  words.size === 1 && PACK_WORDS.has([...words][0]!) ? [...words][0]! : null;
const PACK_WORDS: ReadonlySet<string> = new Set(
  'bag box tube roll can bucket bundle sheet pack pail gallon case piece length stick carton spool'
    .split(' ')
    .map(stem),
);

export interface Piece {
  words: Set<string>;
  count: number | null;
  /** "The roll of 12/2": how it is packed. */
  pack: string | null;
  start: number;
  end: number;
}

/** "The shingles, the boot, and both tubes": each with its count, where one was said; up to the next clause. */
export function piecesOf(list: string, offset: number): Piece[] {
  const out: Piece[] = [];
  const pattern = /[^,&+]+?(?=,|&|\+|\band\b|\bn\b|\bplus\b|$)/g;
  for (const { 0: raw, index } of list.matchAll(pattern)) {
    // Where they were fetched is no part of their name.
    const piece = raw
      .replace(/^\s*(?:and|n|plus)\b/, '')
      .replace(AFTERWARDS, '')
      .replace(/ on (?:the|my|our|his|her) way\b.*$/, '')
      .replace(/ (?:at|from|in|over at|down at) (?:the |that |another |our )?(?:[a-z]+ ){0,2}[a-z]+\s*$/, '')
      .trim();
    if (!piece) continue;
    const sized = piece.replace(BY, (_, a: string, b: string) => `${numberOf(a)}x${numberOf(b)}`);
    if (/^that's (?:all|what)\b/.test(piece)) continue;
    if (CLAUSE.test(piece)) break;
    const [, count, name] =
      /^(?:(?:me|us|all|the|both|of|that|those|our|other|last|same|a|an|new|full|whole|just|only)\s+)*(\d+(?![a-z\d])|[a-z]+)?\s*(.*)$/.exec(
        sized,
      ) ?? [];
    const number = count ? numberOf(count) : null;
    const packed = /\b([a-z]+?)s? of (?:the )?(?=[a-z\d])/.exec(number === null ? sized : (name ?? ''));
    const times = / x ?(\d+)$/.exec(sized)?.[1];
    const called = (number === null ? sized : (name ?? '')).replace(packed?.[0] ?? '', '').replace(/ x ?\d+$/, '');
    const words = new Set(wordsOf(called));
    for (const small of ['both', 'all', 'other', 'of', 'same', 'last', 'rest']) words.delete(stem(small));
    if (words.size > 1) words.delete('one');
    const start = offset + index + raw.indexOf(piece);
    if (words.size)
      out.push({
        words,
        pack: packed ? stem(packed[1]!) : null,
        count:
          number ??
          (times ? Number(times) : null) ??
          (/^(?:both)\b/.test(piece) ? 2 : /^(?:a|an)\b/.test(piece) ? 1 : null),
        start,
        end: start + piece.length,
      });
  }
  return out;
}

/** What is told of goods behind their name: "the cord as well", "outlet this am", "the hinge so that's done". */
const AFTERWARDS =
  /(?<=\S) (?:as well|too|also|already|this (?:am|pm|morning|afternoon)|today|yesterday|last night|only|that'?s all|(?:so|cause|because|but|while|since) )\b.*$/;

/** "The two by eight" is a 2x8. */
const BY = /\b(\d+|one|two|three|four|five|six) by (\d+|two|four|six|eight|ten|twelve)s?\b/;
