import type { Term, Token, Vocabulary } from '../types.ts';
import { HANDLES, KITS } from './data/kits.ts';
import { mentionsIn } from './mentions.ts';
import type { Phrases } from './phrases.ts';
import { verbsOf } from './vocabulary.ts';

const indexes = new WeakMap<Vocabulary, Phrases>();

/** The work named in the words of a task, each kind once: "tape and mud the patch" is `tape`, `mud` and `patch`. */
export function workIn(tokens: readonly Token[], vocabulary: Vocabulary): Term[] {
  let index = indexes.get(vocabulary);
  if (!index) {
    index = verbsOf(vocabulary.terms);
    indexes.set(vocabulary, index);
  }
  const found = new Set<Term>();
  for (let i = 0; i < tokens.length; ) {
    const work = index.longest(tokens, i);
    if (work) found.add(work.term);
    i = work?.until ?? i + 1;
  }
  return [...found];
}

/** The tools and small parts that a task calls for, most needed first. */
export function bringFor(tokens: readonly Token[], vocabulary: Vocabulary): string[] {
  const work = workIn(tokens, vocabulary);
  const kit = work.some(({ name }) => HANDLES.has(name)) ? kitFor(tokens, vocabulary) : null;
  return [...new Set(work.flatMap(({ name, bring }) => (kit && HANDLES.has(name) ? kit : (bring ?? []))))];
}

/** What the thing that is handled calls for; null where its verb must do. */
function kitFor(tokens: readonly Token[], vocabulary: Vocabulary): readonly string[] | null {
  const text = tokens.map((t) => t.text).join(' ');
  const things = mentionsIn(tokens, text, vocabulary).filter(({ term }) =>
    /^(?:part|material|fixture)$/.test(term.kind),
  );
  const kit = KITS.find(({ thing, counter }) =>
    things.some(({ term }) => term.counter === counter && (thing?.test(term.name) ?? true)),
  );
  return kit?.bring ?? null;
}
