import { builtIn } from '../../../../parser/trade/index.ts';
import { lowered } from '../../../../parser/trade/words.ts';
import type { Position } from '../position.ts';

/** Notes of a job, in order of time. */
export type Notes = readonly { saidAt: string }[];

/** More days or notes than these tell no more. */
const DAYS = 5;
const NOTES = 12;
const DAY = 86_400_000;

const wordsIn = (text: string): string[] => lowered(text).match(/[a-z][a-z']*/g) ?? [];
const upTo = (most: number, n: number) => String(Math.min(most, Math.floor(n)));
const dayOf = (at: string) => Date.parse(at.slice(0, 10));

/** How many notes came after a moment, counted up to a few. */
function notesSince(notes: Notes, at: string): number {
  let n = 0;
  while (n < NOTES && n < notes.length && notes[notes.length - 1 - n]!.saidAt > at) n++;
  return n;
}

/** What speaks for and against goods' being still to buy: how long nobody told of them, how they were told, what they are called. */
export function signsOfLine(p: Position, notes: Notes): string[] {
  const { at, quote, rule, confidence } = p.wanted!;
  const since = notesSince(notes, at);
  const days = upTo(DAYS, (dayOf(notes.at(-1)?.saidAt ?? at) - dayOf(at)) / DAY);
  const needs = p.history.filter(({ what }) => what === 'need').length;
  const others = p.history.filter(({ what }) => what !== 'need' && what !== 'mentioned').length;
  const named = wordsIn(p.item);
  const said = new Set(wordsIn(quote));
  const known = named.filter((word) => builtIn().has(word)).length;
  const count = p.need === null ? 'none' : p.need.compare(1) <= 0 ? 'one' : p.need.compare(4) <= 0 ? 'few' : 'many';
  return [
    'any',
    `days ${days}`,
    `notes ${upTo(NOTES, since / 3)}`,
    `days ${days} times ${upTo(3, needs)}`,
    `times ${upTo(3, needs)}`,
    `others ${upTo(3, others)}`,
    `unit ${p.unit}`,
    `count ${count}`,
    `sized ${p.size !== null}`,
    `use ${p.uses.length > 0}`,
    `rule ${rule}`,
    `sure ${upTo(9, confidence * 10)}`,
    `known ${known} of ${upTo(3, named.length)}`,
    `head known ${builtIn().has(named.at(-1) ?? '')}`,
    `said ${upTo(4, (4 * named.filter((word) => said.has(word)).length) / Math.max(1, named.length))}`,
  ];
}
