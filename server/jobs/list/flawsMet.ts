/** A flaw that is told meets the list: it opens an item, joins one, or closes what was put right. */
import { isDoubtful } from '../../../parser/doubtful.ts';
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Problem } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { type Board, reword, type Standing, sharing } from './board.ts';
import { flawName } from './called.ts';
import { isDoubted } from './doubts/index.ts';
import { endByWords } from './hazardous.ts';
import { ALONE, join, open, setState, type Telling, wonder } from './items.ts';
import { leaveOpen, partOfWork } from './leftOpen.ts';
import { type ByRules, sureOf } from './linking/index.ts';
import { find, headOf } from './match.ts';
import { isPartOf, sameBreath, sameThing } from './oneFlaw.ts';

/** The item that the rules take a problem for, or the one that it may be. */
function problemByRules(telling: Telling, fact: Problem): ByRules {
  const { board, called } = telling;
  const sought = {
    words: called.words,
    area: fact.area,
    quote: `${telling.lead} ${fact.quote}`,
    head: called.filing.head,
  };
  const fits = (item: Standing) => sameThing(item, sought.head, sought.words);
  const same = sameBreath(telling, fact);
  if (same) return sureOf(same);
  const live = find(board, sought, { fits, sure: fact.state === 'fixed' ? 0.6 : undefined });
  if (live?.sure) return sureOf(live.item);
  const again = /\b(?:still|again|back)\b/.test(fact.quote.toLowerCase());
  const closed = again || fact.state === 'fixed' ? find(board, sought, { where: ['closed'], fits }) : null;
  if (closed?.sure) return sureOf(closed.item);
  return { item: fact.state === 'fixed' ? soleFlaw(board, fact) : null, perhaps: live?.item ?? null };
}

/** A problem opens an item, joins one that stands, or closes what was put right; null where it is no item. */
export function meetProblem(telling: Telling, fact: Problem): Standing | null {
  const { board, entry, apart } = telling;
  const { item: known, kept, perhaps } = apart ? ALONE : telling.link(telling, fact, problemByRules(telling, fact));
  if (!kept || (!(known && isLive(known)) && !apart && fact.state === 'open' && telling.theirs)) return null;
  const part = fact.state === 'fixed' ? (known ? partOfWork(telling, known, fact.quote) : telling.part) : null;
  const over = fact.state === 'fixed' && !part;
  if (known) {
    if (part) leaveOpen(board, known, entry, fact.quote, part.left);
    else if (over && !endByWords(board, known, entry, telling.key, fact)) return known;
    else if (!over && !isLive(known)) setState(board, known, entry, 'open', fact.quote);
    known.problem ??= fact.defect;
    if (!over && isPartOf(fact, known) && ![...wordsOf(fact.thing)].every((word) => known.words.has(word))) {
      const why = `${fact.thing} ${fact.defect}`;
      known.problem += `, ${why}`;
      if (known.task.includes(':')) known.task += `, ${why}`;
      if (known.wording !== null) known.wording += `, ${why}`;
      reword(board, known, new Set([...known.words, ...wordsOf(why)]));
    }
    join(telling, known, 'said again', fact.quote);
    return known;
  }
  const item = open(
    telling,
    {
      task: flawName(fact.thing, fact.defect),
      wording: fact.wording ?? null,
      problem: fact.defect,
      thing: fact.thing,
      area: fact.area,
      doubtful: fact.suspected || isDoubtful(fact),
      unsure: isDoubted(telling, fact),
    },
    fact.quote,
  );
  if (part) leaveOpen(board, item, entry, fact.quote, part.left);
  else if (over) endByWords(board, item, entry, telling.key, fact);
  return wonder(telling, perhaps, item);
}

/** "Disposal was just jammed, freed it": what was put right is the one flaw that stands of that thing, or of that kind. */
function soleFlaw(board: Board, { thing, defect, area }: Problem): Standing | null {
  const flaws = (words: ReadonlySet<string>) =>
    [...sharing(board, words, 'live')].filter((item) => item.problem && sameArea(item.area, area));
  const head = headOf(thing);
  const ofThing = flaws(new Set([head])).filter((item) => item.thing && item.head === head);
  if (ofThing.length) return ofThing.length === 1 ? ofThing[0]! : null;
  const kind = wordsOf(defect);
  const ofKind = kind.size ? flaws(kind).filter((item) => [...kind].every((word) => item.words.has(word))) : [];
  return ofKind.length === 1 ? ofKind[0]! : null;
}
