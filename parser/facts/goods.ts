import type { MaterialStatus } from '../types.ts';
import { isGoods } from './chunks.ts';
import type { Frame } from './frames.ts';
import type { Talk } from './talk.ts';
import { isPerson } from './talk.ts';

const words = (frame: Frame) => frame.chunks.map((c) => c.word).join(' ');
const AT_STORE =
  /\b(store|supply house|supply|yard|counter|shop|depot|merchant|merchants|picked up|ran me|bucks|receipt|paid)\b/;

/** What the clause's verb says became of the goods in it; null where it says nothing of goods. */
export function goodsStatus(talk: Talk, frame: Frame, at: number): MaterialStatus | null {
  const said = words(frame);
  const { predicate, lemma, use, negative } = frame;
  if (/\b(?:don't|dont|didn't|do not|no longer) need\b|\bneeded$/.test(said) && negative) return 'mentioned';
  if (
    /\b(?:out of|ran out|all out|need|needs|needed|could use|short|shy|falta|missing|gonna want|want me to get|go get)\b/.test(
      said,
    ) &&
    !(predicate === 'past' && use === 'use')
  ) {
    if (/\b(?:need|needs|could use|falta|short|shy)\b/.test(said)) return needOf(frame, said);
  }
  if (/\b(?:went through|used up|burned through|burnt through|go through|goes through)\b/.test(said)) return 'used';
  if (/\b(?:sent|took|brought|taken)\b.*\bback\b/.test(said) && predicate === 'past') return 'returned';
  if (/\b(?:wanted|needed)\b/.test(said) && !negative && frame.chunks.some((c) => c.quantity)) return 'need';
  if (/\b(?:out of|ran out)\b/.test(said) && isPerson(frame.subject)) return 'need';
  if (lemma === 'want' && frame.subject.some((c) => c.term?.kind === 'role') && !frame.chunks.some((c) => c.quantity))
    return null;
  if (/\bdown to\b/.test(said) && (isPerson(frame.subject) || frame.rest.some(isGoods)) && predicate !== 'owed')
    return 'have';
  if (predicate === 'imperative' && lemma === 'figure') return 'need';
  if (/\bgets? (?:a|an|one|two|new)\b/.test(said) && predicate !== 'imperative' && !isPerson(frame.subject))
    return 'need';
  if (predicate === 'imperative' && lemma === 'make' && frame.rest.some(isGoods) && frame.rest.some((c) => c.quantity))
    return 'need';
  if (/\bran me\b/.test(said)) return 'bought';
  if (/\bon order\b/.test(said)) return 'ordered';
  if (/\b(?:on hand|left over|leftover)\b/.test(said)) return 'have';
  if (
    /\b(?:pick(?:ing)? up|grab|bring|get)\b/.test(said) &&
    (predicate === 'imperative' || predicate === 'owed' || predicate === 'modal')
  )
    return lemma && /^(get|grab|pick|bring|order|buy|purchase)$/.test(lemma) ? 'need' : null;
  if (predicate === 'imperative' || predicate === 'owed' || predicate === 'modal') {
    if (negative) return 'mentioned';
    if (use === 'buy' || use === 'need' || (predicate === 'owed' && /^(?:swap|replace|change)$/.test(lemma ?? '')))
      return 'need';
    if (lemma === 'use' || use === 'use') return null;
    return null;
  }
  if (predicate === 'past') {
    if (/\b(?:picked up|got back with|came back with)\b/.test(said)) return 'bought';
    if (/\b(?:took back|sent back|brought back|returned)\b/.test(said)) return 'returned';
    if (lemma === 'order') return 'ordered';
    if (use === 'buy') return 'bought';
    if (use === 'use') return 'used';
    if (lemma === 'get')
      return AT_STORE.test(before(talk, at))
        ? 'bought'
        : /\b(?:left)\b/.test(said) || isPerson(frame.subject) || frame.subject.length === 0
          ? 'have'
          : null;
    if (lemma === 'take' && !negative) return 'used';
    if (lemma === 'leave') return frame.rest[0]?.quantity ? 'have' : null;
    if (lemma === 'bring') return 'have';
    if (INSTALLS.test(lemma ?? '') && !negative) return 'used';
    return null;
  }
  if (predicate === 'present' && (use === 'use' || lemma === 'take') && !negative && isPerson(frame.subject))
    return 'used';
  if (use === 'have' && !negative && (isPerson(frame.subject) || frame.subject.length === 0)) return 'have';
  if (/\b(?:have|has|got|there's|theres|there is|there are)\b/.test(said) && /\bleft\b/.test(said)) return 'have';
  if (
    predicate === 'copula' &&
    /^(in|on|up|set|hung|installed|down)$/.test(frame.rest.at(-1)?.word ?? '') &&
    frame.subject.some((c) => c.quantity || isGoods(c))
  )
    return 'used';
  if (predicate === 'none') {
    if (/^(need|needs|get|grab|buy|order|bring)\b/.test(said)) return 'need';
    if (/^(have|got)\b/.test(said)) return 'have';
    if (/\b(?:left|on hand|in stock|in the van|on the truck)$/.test(said)) return 'have';
    if (
      /\b(?:on|in|up|installed|hung|set|used)$/.test(said) &&
      frame.chunks.some((c) => c.quantity) &&
      frame.chunks.some(isGoods)
    )
      return 'used';
  }
  return null;
}

const INSTALLS =
  /^(install|put|hang|set|lay|mount|swap|replace|nail|screw|glue|use|run|pour|stick|place|change|spread|apply|hook|add)$/;

/** "Need two bags" is to buy; "needs replacing" and "the hole needs thirty" are not. */
function needOf(frame: Frame, said: string): MaterialStatus | null {
  if (/\b(?:don't|dont|doesn't|didn't|no longer|won't) need\b|\bno .* needed\b/.test(said)) return 'mentioned';
  const after = frame.chunks.slice(
    frame.chunks.findIndex((c) => /^(need|needs|use|falta|short|shy|wants?)$/.test(c.word)) + 1,
  );
  if (/^(?:to)$/.test(after[0]?.word ?? '')) {
    const verb = after[1]?.verb?.lemma ?? after[2]?.verb?.lemma;
    return verb && /^(get|grab|pick|buy|order|bring|purchase)$/.test(verb) ? 'need' : null;
  }
  if (after[0]?.verb?.forms.has('ing') && !isGoods(after[0])) return null;
  // "The hole needs thirty", "stat wire is 2 ft short": a size, not goods.
  const sized =
    frame.chunks.some((c) => c.quantity && (c.quantity.unitKind === 'length' || c.quantity.unit === null)) &&
    !after.some(isGoods);
  if (sized && frame.subject.length > 0 && !isPerson(frame.subject) && !/\bmore\b/.test(said)) return null;
  return after.length > 0 || /\bshort\b/.test(said) ? 'need' : null;
}

function before(talk: Talk, at: number): string {
  return talk.frames
    .slice(Math.max(0, at - 3), at + 2)
    .map(words)
    .join(' ');
}
