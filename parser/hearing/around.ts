import type { Term, TermKind, Token, Vocabulary } from '../types.ts';
import { companyOf, slotOf } from './company.ts';
import { NAMED_KINDS } from './names.ts';
import { viewOf } from './views.ts';

/** What stands around a stretch of words, seen from a name that it may have been. */
export interface Around {
  /** How much oftener these words stand beside goods of the name's counter than beside any. */
  counter: number;
  /** Things of the trade near: of the same counter, and of others. */
  same: number;
  other: number;
  /** How much oftener crews say the words around than others do, on average. */
  crew: number;
  /** All the evidence of the words around that a crew talks, added up: natural logarithms. */
  talk: number;
  /** Words near that are crews' own. */
  own: number;
  /** Share of the words around that crews hardly ever say. */
  strange: number;
  /** Marks and digits that only a hand types ("w/", "1/8", "#2"), for each word around. */
  typed: number;
  /** The neighbour that supports the name most, or null where none does. */
  because: string | null;
}

const REACH = 6;
/** The talk is told by more words than the goods. */
const TALK_REACH = 12;
/** A unit stands close before its goods: "two tubes of white cock". */
const UNIT_REACH = 3;
const UNIT = 1.5;
const SAME = 1.2;
const OTHER = 0.4;
/** Said so much oftener by crews than by others: e to this. */
const CREWS = 1;
/** What crews and others say about as often is no evidence. */
const PLAIN = 0.5;
/** A word that crews hardly ever say: so much evidence that none talks. */
const STRANGE = 1.5;
const FEET = ['ft', 'feet', 'foot'];

/** Looks around the words `from` to `until`, as neighbours of a term. */
export function around(
  tokens: readonly Token[],
  from: number,
  until: number,
  term: Term,
  vocabulary: Vocabulary,
): Around {
  const out: Around = { counter: 0, same: 0, other: 0, crew: 0, talk: 0, own: 0, strange: 0, typed: 0, because: null };
  let [most, words, strange, crew, typed] = [0, 0, 0, 0, 0];
  for (let at = Math.max(0, from - TALK_REACH); at < Math.min(tokens.length, until + TALK_REACH); at++) {
    if (at === from) at = until;
    const token = tokens[at];
    if (token && isTyped(token)) typed++;
    if (token?.kind !== 'word' || token.skip) continue;
    const { company, found, strange: isStrange } = viewOf(tokens, at, vocabulary);
    words++;
    const near = at >= from - REACH && at < until + REACH;
    if (company) {
      crew += company.crew;
      if (Math.abs(company.crew) > PLAIN) out.talk += company.crew;
      if (company.crew > CREWS && near) out.own++;
      // Any word that is crews' own is a little support.
      if (company.crew > CREWS && company.crew / 10 > most) {
        most = company.crew / 10;
        out.because = token.word;
      }
    }
    if (isStrange) strange++;
    if (!near) continue;
    let support = company?.counters?.get(term.counter ?? '') ?? 0;
    out.counter += support;
    const other = found?.term;
    if (other && other !== term && NEAR_KINDS.has(other.kind)) {
      if (other.counter && other.counter === term.counter) {
        out.same++;
        support += SAME;
      } else if (NAMED_KINDS.has(other.kind)) {
        out.other++;
        support += OTHER;
      } else if (!EVERYDAY.has(other.kind)) support += OTHER / 2;
    }
    if (at < from && at >= from - UNIT_REACH && isUnitOf(term, token.word)) {
      out.counter += UNIT;
      support += UNIT;
    }
    if (support > most) {
      most = support;
      out.because = token.word;
    }
  }
  out.crew = words ? crew / words : 0;
  out.talk -= STRANGE * strange;
  out.typed = Math.min(1, typed / Math.max(4, words));
  out.strange = words ? strange / words : 0;
  return out;
}

const NEAR_KINDS: ReadonlySet<TermKind> = new Set([...NAMED_KINDS, 'work', 'task', 'defect'] as TermKind[]);
/** Words that everyday talk has too: a colour or a flaw beside it makes no word one of the trade. */
const EVERYDAY: ReadonlySet<TermKind> = new Set(['area', 'role', 'finish', 'defect'] as TermKind[]);

/** Dictation writes words, stops and commas; a thumb writes the rest. */
const isTyped = ({ kind, text }: Token) =>
  kind === 'number' ||
  (kind === 'mark' ? !/^[.,?!'’]$/.test(text) : kind === 'word' && /^(?:\p{Lu}{2,}|[\p{L}]*\d.*)$/u.test(text));

/** Whether goods are bought by what a word names. */
export const isUnitOf = (term: Term, word: string) =>
  (term.soldBy ?? []).some((unit) =>
    unit === 'ft'
      ? FEET.includes(word)
      : unit !== 'each' && (word === unit || word === `${unit}s` || word === `${unit}es`),
  );

/** How likely a name of the trade is between these two neighbours, rather than any word. */
export const slotBefore = (tokens: readonly Token[], from: number): number =>
  companyOf(slotOf(tokens[from - 1]))?.before ?? 0;
export const slotBehind = (tokens: readonly Token[], until: number): number =>
  companyOf(slotOf(tokens[until]))?.after ?? 0;
