import type { Repair, Token, Vocabulary } from '../types.ts';
import { asMany, meantTokens } from './meant.ts';
import { misheardIn } from './misheard.ts';

/**
 * Puts misheard trade words right.
 *
 * @returns the tokens as meant, and each repair with what was heard and what supported it
 */
export function repair(
  tokens: readonly Token[],
  text: string,
  vocabulary: Vocabulary,
): { tokens: Token[]; repairs: Repair[] } {
  const out: Token[] = [];
  const repairs: Repair[] = [];
  let done = 0;
  for (const { from, until, meant: name, because } of misheardIn(tokens, vocabulary)) {
    for (; done < from; done++) out.push(tokens[done]!);
    const [start, end] = [tokens[from]!.start, tokens[until - 1]!.end];
    const heard = text.slice(start, end);
    const meant = asMany(name, tokens[until - 1]!.word);
    repairs.push({ start, end, heard, meant, because });
    out.push(...meantTokens(tokens.slice(from, until), meant, heard));
    done = until;
  }
  for (; done < tokens.length; done++) out.push(tokens[done]!);
  return { tokens: out, repairs };
}
