import type { MaterialStatus } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';
import { isPerson } from '../talk.ts';
import { isCount, type Lot } from './lots.ts';

const words = (frame: Frame) => frame.chunks.map((c) => c.word).join(' ');
const AT_STORE =
  /\b(store|supply house|supply|yard|counter|shop|depot|merchant|merchants|picked up|ran me|bucks|receipt|paid)\b/;

/** Crews' Spanish: we need, we have, we used, we bought. */
const SPANISH: [RegExp, MaterialStatus][] = [
  [/\b(?:necesito|necesitamos|ocupo|ocupamos|falta|faltan)\b/, 'need'],
  [/\b(?:tengo|tenemos|quedan?)\b/, 'have'],
  [/\b(?:us[eé]|usamos|gastamos)\b/, 'used'],
  [/\b(?:compr[eé]|compramos)\b/, 'bought'],
];

/** What the clause's verb says became of the goods in it; null where it says nothing of goods. */
export function goodsStatus(talk: Talk, frame: Frame, at: number): MaterialStatus | null {
  const said = words(frame);
  const { predicate, lemma, use, negative } = frame;
  const spanish = SPANISH.find(([pattern]) => pattern.test(said));
  if (spanish && frame.chunks[0]!.word !== 'use') return spanish[1];
  if (/\b(?:don't|dont|didn't|do not|no longer) need\b|\bneeded$/.test(said) && negative) return 'mentioned';
  if (
    /\b(?:out of|ran out|all out|need|needs|needed|could use|short|shy|falta|missing|gonna want|want me to get|go get)\b/.test(
      said,
    ) &&
    !(predicate === 'past' && use === 'use')
  ) {
    if (/\b(?:need|needs|could use|falta|short|shy)\b/.test(said)) return needOf(frame, said);
  }
  if (
    /\b(?:went through|used up|burned through|burnt through|go through|goes through)\b/.test(said) &&
    (isPerson(frame.subject) || frame.subject.length === 0 || frame.subject.every((c) => c.word !== 'a'))
  )
    return 'used';
  if (/\b(?:sent|took|brought|taken)\b.*\bback\b/.test(said) && predicate === 'past') return 'returned';
  if (/\b(?:wanted|needed)\b/.test(said) && !negative && frame.chunks.some((c) => c.quantity)) return 'need';
  if (/\b(?:out of|ran out)\b/.test(said) && isPerson(frame.subject)) return 'need';
  if (
    lemma === 'want' &&
    frame.subject.some((c) => c.term?.kind === 'role' || /^(?:he|she|they)$/.test(c.word)) &&
    !frame.chunks.some((c) => c.quantity)
  )
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
    // "I'll pop back tomorrow with the trap and a tube of sealant".
    if (
      /^(?:pop|come|swing|be|return|stop|go|show)$/.test(lemma ?? '') &&
      /\bwith\b/.test(said) &&
      isPerson(frame.subject)
    )
      return 'need';
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
    // "Floated it with a bag of self leveler", "foamed it with two kits".
    const by = frame.rest.findIndex((c) => c.word === 'with');
    if (by >= 0 && !negative && use === 'work' && frame.rest[by + 1]?.quantity) return 'used';
    // "Pulled 250 ft of cable" runs it; "pulled the toilet" takes it out.
    if (
      /^(?:pull|fish|feed|snake)$/.test(lemma ?? '') &&
      frame.rest.some((c) => c.quantity && c.quantity.unit !== 'in') &&
      /\b(?:wire|cable|conduit|pipe|tubing|\d+[-/]\d)\b/.test(said)
    )
      return 'used';
    return null;
  }
  if (predicate === 'present' && (use === 'use' || lemma === 'take') && !negative && isPerson(frame.subject))
    return 'used';
  if (use === 'have' && !negative && (isPerson(frame.subject) || frame.subject.length === 0)) return 'have';
  if (/\b(?:have|has|got|there's|theres|there is|there are)\b/.test(said) && /\bleft\b/.test(said)) return 'have';
  if (
    predicate === 'copula' &&
    !negative &&
    (IN_PLACE.test(frame.rest.at(-1)?.word ?? '') || IN_PLACE.test(frame.rest[0]?.word ?? '')) &&
    frame.subject.some((c) => c.quantity || isGoods(c)) &&
    !frame.rest.some((c) => c.term?.kind === 'defect')
  )
    return 'used';
  if (predicate === 'none') {
    if (/^(need|needs|get|grab|buy|order|bring)$/.test(frame.chunks[0]!.word)) return 'need';
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

/** "Skirting's on", "rods are in", "sod is down". */
const IN_PLACE = /^(?:in|on|up|down|set|hung|installed|laid|fitted)$/;
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
  // "Need the designer to decide": a person's turn.
  if (after.some((c, k) => c.term?.kind === 'role' && after[k + 1]?.word === 'to')) return null;
  // "Needs 48 hours before we hang panels": a wait.
  if (after[0]?.kind === 'time') return null;
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

/** Words behind a count that tell what became of it, whatever verb the clause has. */
const TOLD_AFTER =
  /^(?:left|gone|short|used|needed|wanted|required|is|are|extra|over|installed|fitted|hung|swapped|replaced|changed|in|set)$/;

/** Goods that the verb speaks of: behind it, counted or by article; not its subject, nor where a thing is ("under the sink"). */
export function speaksOf(frame: Frame, lot: Lot, fate: MaterialStatus): boolean {
  const counted = lot.amount !== null || lot.article;
  const inSubject =
    frame.verbAt >= 0 && lot.until <= frame.verbAt && frame.predicate !== 'copula' && frame.predicate !== 'none';
  const paid = fate === 'bought' && lot.amount !== null && frame.chunks[frame.verbAt + 1]?.word === 'me';
  if (inSubject && !paid && !(lot.amount && TOLD_AFTER.test(frame.chunks[lot.until]?.word ?? ''))) return false;
  if (counted) return true;
  // "Thermostat wire too short", "filters changed": said of the goods, not of buying them.
  if (
    lot.own.some(
      (c: Chunk) =>
        c.term?.kind === 'defect' ||
        c.word === 'too' ||
        c.word === 'all' ||
        (c.verb && !c.verb.forms.has('base') && !isNounTerm(c)),
    )
  )
    return false;
  if (fate === 'used' || fate === 'have') return false;
  const before = frame.chunks[lot.from - 1];
  return !(isPreposition(before) && before!.word !== 'of' && before!.word !== 'up');
}

/** "1 roll left", "2 short", "x4 missing" decide for their own lot, whatever the clause's verb says. */
export function fateOf(frame: Frame, lot: Lot, status: MaterialStatus | null): MaterialStatus | null {
  const after = frame.chunks[lot.until]?.word ?? '';
  const next = frame.chunks[lot.until + 1]?.word ?? '';
  const before = frame.chunks[lot.from - 1]?.word;
  if (
    /^(?:left|leftover|extra|spare)$/.test(after) ||
    (after === 'on' && next === 'hand') ||
    (after === 'over' && lot.amount)
  )
    return 'have';
  if (/^(?:gone|used)$/.test(after)) return 'used';
  if (
    /^(?:wanted|needed|required)$/.test(after) ||
    (/^(?:is|are)$/.test(after) && /^(?:wanted|needed|required)$/.test(next))
  )
    return 'need';
  if (after === 'short' && lot.amount && isCount(lot.amount)) return 'need';
  if (before === 'short' || before === 'shy') return 'need';
  const placed =
    /^(?:installed|fitted|hung|swapped|replaced|changed|set)$/.test(after) ||
    (after === 'in' && lot.until === frame.chunks.length - 1) ||
    (after === 'up' && frame.predicate === 'none');
  if (
    placed &&
    lot.amount &&
    frame.verbAt <= lot.until &&
    frame.predicate !== 'owed' &&
    frame.predicate !== 'modal' &&
    !frame.negative
  )
    return 'used';
  return status;
}
