/** A danger that a note tells stands on the list, whatever its words were read as: people tell of it in passing. */
import { sameArea } from '../../../parser/trade/likeness.ts';
import type { Fact } from '../../../parser/types.ts';
import { type DangerTold, dangersIn } from '../../takeoff/index.ts';
import { reword, type Standing, sharing } from './board.ts';
import { type Clause, clausesOf } from './endings/clauses.ts';
import { dangersOf, isDealtWith } from './hazardous.ts';
import { join, open, type Telling } from './items.ts';
import { dayOf } from '../ledger.ts';
import { isLive } from '../live.ts';
import type { Meeting } from '../meeting.ts';

/** Opens an item for each danger of a note that none of its facts has put on the list; a name that does not tell of it does from now on. */
export function openDangers(meeting: Meeting, facts: readonly Fact[], areas: readonly string[]): void {
  const { ledger, entry, noteId, text, met, rulings } = meeting;
  const { board, questions } = ledger;
  for (const danger of dangersIn(text)) {
    const key = `${noteId}/${danger.start}h`;
    if (rulings.isOut(key) || isNotItself(danger, text, facts)) continue;
    const told = clausesOf(text).filter(({ start, end }) => start < danger.end && end > danger.start);
    const [first] = told;
    if (!first || isOver(danger, first, text)) continue;
    const last = told.at(-1)!;
    const quote = text.slice(first.start, last.end).trim();
    const telling: Telling = {
      board,
      entry,
      key,
      apart: rulings.isApart(key),
      met,
      lead: '',
      tail: '',
      part: null,
      removed: null,
      questions,
      link: meeting.link,
    };
    const tellsIt = (item: Standing) => dangersOf(item).some(({ hazard }) => hazard === danger.hazard);
    const here = met.find((item) => (isLive(item) || item.unsure) && tellsIt(item));
    if (here) {
      here.unsure = false;
      if (here.history[0]!.entry === entry.id && here.problem !== null) nameBy(telling, here, danger, quote);
      continue;
    }
    const area = areas.find((room) => quote.toLowerCase().includes(room.toLowerCase())) ?? roomBefore(facts, last.end);
    const words = new Set(told.flatMap((clause) => [...clause.words]));
    const known = [...sharing(board, words, 'live')].find((item) => tellsIt(item) && sameArea(item.area, area));
    if (known && !telling.apart) {
      join(telling, known, 'said again', quote);
      met.push(known);
      continue;
    }
    const item = open(
      telling,
      { task: nameOf(quote), problem: text.slice(danger.start, danger.end).toLowerCase(), area },
      quote,
    );
    met.push(item);
    dayOf(ledger, entry.at.slice(0, 10)).found.push(item.task);
  }
}

/** Goods of that name, what somebody decided, and what is asked. */
function isNotItself({ start, end }: DangerTold, text: string, facts: readonly Fact[]): boolean {
  const stop = /[.!?\n]/.exec(text.slice(end));
  return (
    stop?.[0] === '?' ||
    facts.some(
      (f) => f.start < end && f.end > start && (f.kind === 'material' || f.kind === 'decision' || f.kind === 'command'),
    )
  );
}

/** So far behind it a note may tell that it was dealt with: "drain smells, trap dry, filled it". */
const BEHIND = 90;

const isOver = (danger: DangerTold, first: Clause, text: string): boolean =>
  clausesOf(text).some(
    ({ said, start }) => start >= first.start && start < danger.end + BEHIND && isDealtWith(danger, said),
  );

const roomBefore = (facts: readonly Fact[], end: number): string | null =>
  facts.findLast(({ start }) => start < end)?.area ?? null;

/** "Attic: loose gray pebbly" does not tell of insulation: it goes by the words that tell of the danger. */
function nameBy({ board }: Telling, item: Standing, danger: DangerTold, quote: string): void {
  if (dangersIn(`${item.task}. ${item.problem}`).some(({ hazard }) => hazard === danger.hazard)) return;
  item.task = nameOf(quote);
  reword(board, item, new Set([...item.words]));
}

const BEFORE_IT =
  /^(?:(?:and|so|but|also|oh|well|um|uh|okay|ok|now|there's|theres|there is|there are|(?:we |i )?found|we've got|she's got) )+/;
const LONGEST = 70;

/** What was said of it, without the words that lead up to it. */
function nameOf(quote: string): string {
  const name = quote.toLowerCase().replace(BEFORE_IT, '');
  return name.length <= LONGEST ? name : name.slice(0, name.lastIndexOf(' ', LONGEST));
}
