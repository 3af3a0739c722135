import type { Term, Vocabulary } from '../types.ts';
import { GOODS } from './data/goods.ts';
import { SITE } from './data/site.ts';
import { vocabularyOf } from './vocabulary.ts';

let built: Vocabulary | undefined;

/** The trade's words that ship with the product; built on first use. */
export function builtIn(): Vocabulary {
  built ??= vocabularyOf(terms());
  return built;
}

/** A firm's own words added to a vocabulary; theirs win over the built-in ones of the same name. */
export function withTerms(base: Vocabulary, extra: readonly Term[]): Vocabulary {
  return vocabularyOf([...base.terms, ...extra]);
}

/** Every built-in term, from the data tables. */
export function terms(): Term[] {
  const out: Term[] = [];
  for (const sections of Object.values(GOODS)) {
    for (const { kind, counter, lines } of sections)
      for (const line of lines.split('\n')) out.push({ ...parse(line), kind, counter });
  }
  for (const [kind, lines] of Object.entries(SITE))
    for (const line of lines.split('\n')) out.push({ ...parse(line), kind: kind as Term['kind'] });
  return out;
}

/** `name; other, other; ~misheard, ~misheard; @unit, unit` */
function parse(line: string): Omit<Term, 'kind'> {
  const [name = '', ...parts] = line.split(';').map((part) => part.trim());
  const list = (part: string) =>
    part
      .split(',')
      .map((word) => word.trim())
      .filter(Boolean);
  const also: string[] = [];
  const misheard: string[] = [];
  const soldBy: string[] = [];
  for (const part of parts) {
    if (part.startsWith('~')) misheard.push(...list(part.slice(1)));
    else if (part.startsWith('@')) soldBy.push(...list(part.slice(1)));
    else also.push(...list(part));
  }
  return { name, ...(also.length && { also }), ...(misheard.length && { misheard }), ...(soldBy.length && { soldBy }) };
}
