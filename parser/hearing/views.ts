import type { Term, Token, Vocabulary } from '../types.ts';
import { type Company, companyOf } from './company.ts';
import { everyday } from './everyday.ts';

/** What one word of a note is by itself, looked up once however many names it stands beside. */
export interface View {
  /** The name of the trade that starts here as it stands. */
  found: { term: Term; until: number } | null;
  company: Company | null;
  /** Everyday English that crews hardly ever say. */
  strange: boolean;
}

const views = new WeakMap<readonly Token[], (View | undefined)[]>();

/** The word at a place of a note. */
export function viewOf(tokens: readonly Token[], at: number, vocabulary: Vocabulary): View {
  let all = views.get(tokens);
  if (!all) {
    all = [];
    views.set(tokens, all);
  }
  let view = all[at];
  if (!view) {
    const { word, kind } = tokens[at]!;
    const company = companyOf(word);
    view = {
      found: vocabulary.match(tokens, at),
      company,
      strange: kind === 'word' && !company && everyday(word) && !vocabulary.has(word),
    };
    all[at] = view;
  }
  return view;
}
