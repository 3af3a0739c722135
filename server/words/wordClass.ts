import type { WordClass, WordClassOf } from '../../parser/types.ts';

/** Answers kept at once; a job's talk knows far fewer words. */
const KEPT = 20_000;

/**
 * Tells what a general tagger takes a word for, between its neighbours; answers are kept. It lives on the server
 * alone: the phone reads with the trade's own words and so carries no tagger.
 */
export async function loadWordClass(): Promise<WordClassOf> {
  const { default: nlp } = await import('compromise/two');
  const known = new Map<string, WordClass | null>();
  const ask = (word: string, said: string): WordClass | null => {
    const doc = nlp(said);
    doc.compute('root');
    const term = doc.docs.flat().find((t) => t.normal === word);
    const tags = term?.tags;
    if (!term || !tags) return null;
    if (tags.has('Noun')) return { class: 'noun' };
    if (!tags.has('Verb')) return null;
    const form = tags.has('Gerund')
      ? 'ing'
      : tags.has('PastTense') || tags.has('Participle')
        ? 'past'
        : tags.has('PresentTense') && word.endsWith('s') && !tags.has('Infinitive')
          ? 's'
          : 'base';
    return { class: 'verb', lemma: (term as { root?: string }).root ?? word, form };
  };
  return (word, before, after) => {
    const said = `${before} ${word} ${after}`.trim();
    const kept = known.get(said);
    if (kept !== undefined) return kept;
    const answer = ask(word, said);
    if (known.size >= KEPT) known.clear();
    known.set(said, answer);
    return answer;
  };
}
