/** Work to come meets the list: it joins the flaw that it repairs, the item that it repeats, or opens its own. */
import { isDoubtful } from '../../../parser/doubtful.ts';
import type { FollowUp } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { tellsRest } from '../said/partly.ts';
import { reword, type Standing } from './board.ts';
import { isDoubted } from './doubts/index.ts';
import { ALONE, join, open, setState, type Telling, wonder } from './items.ts';
import { type ByRules, sureOf } from './linking/index.ts';
import { find } from './match.ts';
import { assigned, flawOf, moved, NO_NAME, sameWork } from './repairs.ts';

/** The flaw that a plan repairs, the item it repeats, or the one it gives out, by the rules. */
function planByRules(telling: Telling, fact: FollowUp): ByRules {
  const { words, verb, object } = telling.called;
  const flaw = flawOf(telling, fact);
  if (flaw) return sureOf(flaw);
  // What is left of work goes by its thing alone.
  const named = tellsRest(fact.quote) ? object : words;
  const match = find(
    telling.board,
    { words: named.size ? named : words, area: fact.area, quote: fact.quote },
    { fits: (item) => sameWork(item, verb) },
  );
  if (match?.sure) return sureOf(match.item);
  return { item: assigned(telling, fact, words) ?? moved(telling, fact), perhaps: match?.item ?? null };
}

/** A follow-up joins the problem it repairs, the item it repeats, or opens its own; null where it is no item. */
export function meetFollowUp(telling: Telling, fact: FollowUp): Standing | null {
  const { board, entry, apart } = telling;
  const { words } = telling.called;
  const readyOn = readyDay(fact);
  const { item: known, kept, perhaps } = apart ? ALONE : telling.link(telling, fact, planByRules(telling, fact));
  if (!kept) return null;
  if (!known)
    return wonder(
      telling,
      perhaps,
      open(
        telling,
        {
          task: fact.task,
          wording: fact.wording ?? null,
          area: fact.area,
          who: fact.who,
          due: fact.due,
          readyOn,
          waitingFor: fact.waitingFor,
          doubtful: isDoubtful(fact),
          unsure: isDoubted(telling, fact),
        },
        fact.quote,
      ),
    );
  if (!isLive(known)) setState(board, known, entry, 'open', fact.quote);
  const flaw = known.problem !== null;
  const first = flaw && known.task.includes(':') && !NO_NAME.test(fact.task);
  if (first) {
    const named = words.has(known.head);
    known.task = named ? fact.task : `${fact.task} ${known.thing ?? ''}`.trim();
    known.wording = fact.wording && !named ? `${fact.wording} (${known.thing})` : (fact.wording ?? null);
    reword(board, known, new Set([...known.words, ...words]));
  } else if (flaw && NO_NAME.test(fact.task)) reword(board, known, new Set([...known.words, ...words]));
  known.who = fact.who ?? known.who;
  known.due = fact.due ?? known.due;
  known.readyOn = readyOn ?? known.readyOn;
  known.waitingFor = fact.waitingFor ?? known.waitingFor;
  if (fact.waitingFor && readyOn && readyOn > entry.at.slice(0, 10))
    setState(board, known, entry, 'waiting', fact.quote);
  join(telling, known, first ? 'repair named' : 'said again', fact.quote);
  return known;
}

const readyDay = (fact: FollowUp) =>
  [fact.due, fact.notBefore]
    .filter((day): day is string => day !== null)
    .sort()
    .at(-1) ?? null;
