import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { readTimes } from '../../../parser/times/index.ts';
import { wordsOf } from '../../../parser/trade/likeness.ts';
import type { FollowUp } from '../../../parser/types.ts';
import { readOnce } from '../reading/readOnce.ts';
import type { Said } from '../reading/said.ts';
import type { ComputedWait } from '../types.ts';

/** Goods that are to come, by the note that told it last. */
interface Arrival {
  thing: string;
  day: string;
  noteId: string;
  area: string | null;
}

const speaks = readOnce(({ text }) =>
  /\b(?:arriv\w+|com(?:e|es|ing)|came|deliver\w*|due|expected|ship\w*|here|show(?:s|ed|ing)? up|turned up|waiting)\b/i.test(
    text,
  ),
);

/** Between the goods' name and what is told of them: "for the bath". */
const BETWEEN = "(?:'s|'re|s|es)?(?: (?:for|in) (?:the )?[a-z]+(?: [a-z]+)?)?";
const HELPS = '(?: (?:is|are|will|should|be|being|gets?|getting|not|only|supposed to|gonna|going to))*';
const COMES = new RegExp(
  `^${BETWEEN}${HELPS} (?:arriv(?:es?|ing)|com(?:es?|ing)(?: in)?|(?:be )?here|delivered|due(?: in)?|expected|ships?|shipping|show(?:s|ing)? up|(?:won't|wont|isn't|aren't|not) (?:be |get |getting |come |coming |arrive |arriving )?(?:here|in)?)(?: (?:on|by|till|til|until|before))* `,
);
const HERE = new RegExp(
  `^${BETWEEN}(?: (?:finally|just|all|already))* (?:came|arrived|showed up|turned up|got here|(?:is|are) here|(?:was|were|got) (?:delivered|dropped off))\\b`,
);
const AWAITED = /\b(?:waiting|wait) (?:on|for) (?:the |our |those |that )?$/;
const TILL = /^(?:s|es)? (?:till|til|until) /;

/** Work that cannot start without the goods; taking the old one out can. */
const NEEDS =
  /^(?:install|set|hang|put|mount|lay|place|fit|hook|connect|plumb|tile|swap|replace|start|finish|wire|glue)\b/;
const TILES = /^(?:set|lay|tile|start|install)\b.*\b(?:floors?|walls?|shower|backsplash|tile)\b/;

/** Planned work whose goods come only later: it waits for the day that a note told. */
export function arrivalsIn(notes: readonly Said[]): ComputedWait[] {
  const coming = new Map<string, Arrival>();
  for (const note of notes) if (speaks(note)) takeNote(coming, note);
  if (coming.size === 0) return [];
  return notes.flatMap((note) =>
    note.facts.flatMap((fact) => {
      const arrival = fact.kind === 'followUp' ? awaitedBy(fact, [...coming.values()]) : undefined;
      return fact.kind === 'followUp' && arrival ? [waitFor(fact, arrival, note.noteId)] : [];
    }),
  );
}

function takeNote(coming: Map<string, Arrival>, { text, saidAt, noteId, terms, area }: Said): void {
  const lower = text.toLowerCase();
  for (const { term, start, end } of terms) {
    if (!/^(?:material|part|fixture)$/.test(term.kind)) continue;
    const rest = lower.slice(end);
    if (HERE.test(rest)) coming.delete(term.name);
    const told = COMES.exec(rest) ?? (AWAITED.test(lower.slice(0, start)) ? TILL.exec(rest) : null);
    const day = told && firstDay(/^[^.,;!?\n]*/.exec(rest.slice(told[0].length))![0], saidAt);
    if (day) coming.set(term.name, { thing: term.name, day, noteId, area });
  }
}

function firstDay(words: string, now: string): string | null {
  const tokens = tokenise(words);
  const { quantities } = readQuantities(tokens, words);
  return readTimes(tokens, words, { now, quantities }).find((time) => !time.past)?.date ?? null;
}

/** The goods that a plan needs, by the last word of their name. */
const awaitedBy = ({ task }: FollowUp, coming: readonly Arrival[]): Arrival | undefined =>
  coming.find(({ thing }) => {
    if (/\btile$/.test(thing) && TILES.test(task)) return true;
    const [head] = wordsOf(thing.split(' ').at(-1)!);
    return NEEDS.test(task) && head !== undefined && wordsOf(task).has(head);
  });

const waitFor = ({ task, area, due }: FollowUp, arrival: Arrival, namedIn: string): ComputedWait => ({
  task,
  area: area ?? arrival.area,
  readyOn: arrival.day,
  waitingFor: `${arrival.thing} to arrive`,
  source: 'as said',
  noteId: arrival.noteId,
  namedIn,
  plannedOn: due,
  plannedAt: null,
  readyAt: null,
});
