import { isTitle } from '../hearing/titles.ts';
import { stem } from '../trade/likeness.ts';
import { lowered } from '../trade/words.ts';
import type { Decision, Fact, Span, Token } from '../types.ts';
import { goesByName } from './peopleNamed.ts';
import { firstFrom, type Talk } from './talk.ts';
import { verbOf } from './verbs.ts';
import { COPULAS, DETERMINERS, isSmall } from './words.ts';

/** Longer than this, a line is no line any more. */
const MOST_WORDS = 18;

/** Leads up to what is told: "so I'll", "we've got to", "oh and". */
const LEADS = new Set(
  "so and then now but also oh ok okay well i i'll i'm i've i'd we we'll we've we're still just gonna gotta to will must can please".split(
    ' ',
  ),
);
const LEADING_PAIRS = /^(?:have|has|had|got|need|needs|going|want|wants) to /;

/** A name keeps its capital: "call Mrs. Coyle". */
const PROPER = /^\p{Lu}\p{Ll}/u;

/** Left over where somebody only comes on another day. */
const SAYS_NOTHING = /^(?:instead|can't|cant|cannot|won't)$/;

/** What nothing ends with. */
const LEADS_ON = new Set('and so but then because or the a an to of with from till until'.split(' '));

/** Says when: stands with the day that it leads to. */
const BEFORE_DAY = new Set('on by before till until for from this'.split(' '));

/**
 * A flaw, a plan or finished work in the words in which it was told, where its name leaves out any of them or turns them
 * round: "it goes back to the counter (transformers)". What the name adds to the words stands behind them.
 */
export function worded<F extends Fact>(talk: Talk, fact: F): F {
  if (fact.kind !== 'problem' && fact.kind !== 'followUp' && fact.kind !== 'done') return fact;
  const name = fact.kind === 'problem' ? `${fact.thing} ${fact.defect}` : fact.task;
  const said = saidIn(talk, fact);
  if (
    said.every(({ kind, word }) => kind === 'mark' || isSmall(word) || SAYS_NOTHING.test(word)) ||
    (isAllOf(name, said) && !said.slice(1).some(({ text }) => PROPER.test(text)))
  )
    return fact;
  const text = joined(talk, said);
  const stems = new Set([text, fact.quote].flatMap((told) => told.toLowerCase().split(/[^a-z0-9]+/)).map(stem));
  const besides = (fact.kind === 'problem' ? fact.thing : name)
    .replace(/[()]/g, ' ')
    .split(/\s+/)
    .filter(
      (word, k) =>
        word &&
        !isSmall(word) &&
        !(k === 0 && fact.kind !== 'problem' && verbOf(word)?.forms.has('base')) &&
        !stems.has(stem(word.toLowerCase())) &&
        !fact.quote.toLowerCase().includes(word.toLowerCase()),
    );
  return { ...fact, wording: besides.length ? `${text} (${besides.join(' ')})` : text };
}

/** A stretch of the talk in its own words, which are all the name that a decision has. */
export const inOwnWords = (talk: Talk, span: Span): string => joined(talk, saidIn(talk, { ...span, kind: 'decision' }));

/** What may be told in its own words: any fact, or a decision before it has them. */
type Told = Exclude<Fact, Decision> | (Span & Pick<Decision, 'kind'>);

/** The words of a fact as meant: fillers and what was taken back left out, so are what leads up to it and its day. */
function saidIn(talk: Talk, fact: Told): Token[] {
  const { tokens } = talk.reading.heard;
  const days = fact.kind === 'followUp' ? [fact.due, fact.notBefore] : [];
  const told = talk.reading.times.filter(
    ({ date, start, end }) => days.includes(date) && start >= fact.start && end <= fact.end,
  );
  const own: Token[] = [];
  for (let i = firstFrom(tokens, fact.start); i < tokens.length && tokens[i]!.start < fact.end; i++) {
    const token = tokens[i]!;
    // "Coming Wednesday" is a day as it is read, and more as it is told.
    const day = /^com(?:e|es|ing)$/.test(token.word)
      ? undefined
      : told.find(({ start, end }) => token.start >= start && token.end <= end);
    if (day && token.start === day.start) while (own.length && BEFORE_DAY.has(own.at(-1)!.word)) own.pop();
    if (!token.skip && !day) own.push(token);
  }
  let from = 0;
  while (from < own.length && (own[from]!.kind === 'mark' || own[from]!.kind === 'break' || LEADS.has(own[from]!.word)))
    from++;
  from += doerIn(own.slice(from), fact);
  if (LEADING_PAIRS.test(`${own[from]?.word} ${own[from + 1]?.word} `)) from += 2;
  // "I've got two treads split": whose they are is plain.
  else if (from > 0 && fact.kind === 'problem' && /^(?:got|have)$/.test(own[from]?.word ?? '')) from++;
  // Numbers and marks make a line longer as well.
  const short = own.slice(from, from + 2 * MOST_WORDS);
  const over = short.filter(({ kind }) => kind === 'word')[MOST_WORDS];
  let until = over ? own.indexOf(over) : from + short.length;
  while (until > from && (own[until - 1]!.kind === 'mark' || LEADS_ON.has(own[until - 1]!.word))) until--;
  return own.slice(from, until);
}

/** Who does it stands with the item as well: "Marisol will caulk the window". So many words tell it. */
function doerIn(said: readonly Token[], fact: Told): number {
  const who = fact.kind === 'followUp' ? fact.who?.toLowerCase().split(' ') : undefined;
  const named = who?.every((word, k) => said[k]?.word.replace(/'(?:s|ll|d)$/, '') === word);
  if (!who || !named) return 0;
  let until = who.length;
  while (DOES.has(said[until]?.word ?? '')) until++;
  // "Roofer's back": nothing is said of him but that he comes.
  return /^(?:com(?:e|es|ing)|back|here|there|in|out|over|by|due)$/.test(said[until]?.word ?? 'here') ? 0 : until;
}
const DOES = new Set("will 'll is 's can could should has to gets gotta gonna going needs".split(' '));

/** Does a name say every word that was told, in order, but for articles and "is"? Then it is shorter, and says as much. */
function isAllOf(name: string, said: readonly Token[]): boolean {
  const names = name
    .toLowerCase()
    .split(/[^a-z0-9']+/)
    .map(stem);
  let at = 0;
  return said.every(({ kind, word }) => {
    if (kind === 'mark' || kind === 'break' || DETERMINERS.has(word) || COPULAS.has(word)) return true;
    const found = names.indexOf(stem(word), at);
    at = found + 1;
    return found >= 0;
  });
}

/** Written as it was said, a sentence's first letter small unless it is a name's. */
function joined(talk: Talk, said: readonly Token[]): string {
  let out = '';
  for (const [k, token] of said.entries()) {
    const meant = lowered(token.text) === token.word ? token.text : token.word;
    const text = token.kind === 'break' ? ',' : k === 0 && isPlain(talk, token) ? meant.toLowerCase() : meant;
    out += (out && (token.spaced || k === 0) && token.kind !== 'break' ? ' ' : '') + text;
  }
  return out;
}

/** People whom nobody names. */
const SOMEBODY = /^(?:who|some|any|every|no)(?:body|one|thing|ever)/;

const isPlain = (talk: Talk, token: Token): boolean => {
  const { tokens } = talk.reading.heard;
  if (isTitle(tokens, firstFrom(tokens, token.start))) return false;
  const chunk = talk.chunks[firstFrom(talk.chunks, token.start)];
  return (
    isSmall(token.word) ||
    SOMEBODY.test(token.word) ||
    chunk?.quantity !== undefined ||
    chunk?.start !== token.start ||
    chunk.verb !== undefined ||
    (chunk.term !== undefined && !goesByName(chunk.term))
  );
};
