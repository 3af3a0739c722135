/** Whether a flaw is of what was told just before. */
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Problem } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { stems } from '../said/verbs.ts';
import type { Standing } from './board.ts';
import type { Telling } from './items.ts';
import { headOf } from './match.ts';

/** Told of what was told just before, or only of which one of several. */
export function sameBreath({ met, lead, board }: Telling, fact: Problem): Standing | null {
  const last = met.at(-1);
  if (last?.problem && isLive(last) && isOfIt(last, last.problem, fact, lead)) return last;
  // "Left one split too": which of them, not what.
  for (const word of wordsOf(fact.thing)) if (!SIDES.has(word)) return null;
  const defect = wordsOf(fact.defect);
  return (
    board.items
      .slice(-20)
      .findLast(
        (item) => isLive(item) && item.problem && [...wordsOf(item.problem)].some((word) => defect.has(word)),
      ) ?? null
  );
}

function isOfIt(last: Standing, problem: string, fact: Problem, lead: string): boolean {
  const said = fact.quote.toLowerCase();
  // "It's loose in the wall and there's no test button on it": both of the one thing just told of.
  const points =
    !wordsOf(fact.quote).has(headOf(fact.thing)) &&
    /\b(?:on|in|of|to|from|behind|under) (?:it|them)\b|\bthere$|^(?:so |and )*(?:it's|its|it|they're|they)\b/.test(
      said,
    );
  if (points && /^[\s,]*(?:and|so|plus|also|,)?[\s,]*$/.test(lead)) return true;
  if (!sameArea(last.area, fact.area)) return false;
  // "Window won't lock, the latch is bent": what it does, and why.
  const cause = /\b(?:missing|loose|gone|stripped|bent|broken|broke|worn|rusted|cracked)$/.test(said);
  const symptom = /\b(?:won't|doesn't|can't|don't|not)\b/.test(problem) || (cause && SYMPTOM.test(problem));
  // "Sign bracket is loose, two anchors pulled out": a part of it, and why.
  return (symptom && /^, *$/.test(lead)) || (isPartOf(fact, last) && BESIDE.test(lead));
}

/** Small parts, told as the cause of what was told just before. */
const PARTS = stems(
  'slide slides hinge hinges screw screws anchor anchors chain spring strike latch pivot bolt bolts cord pin pins gasket cartridge flapper washer roller rollers track closer clip clips nut glue bracket stem seat spline balance',
);
export const isPartOf = ({ thing }: Problem, { head }: Standing) => PARTS.has(headOf(thing)) && !PARTS.has(head);
const BESIDE = /^[\s,-]*(?:(?:the|its|it's|cause|because|all|one|two|three|four|\d+)[\s,]*)*$/;

/** What a thing does while its cause is another: "grille rattles, two screws missing". */
const SYMPTOM =
  /^(?:rattles?|rattling|squeaks?|wobbles?|wobbly|rubs?|hums?|buzzes|buzzing|shakes?|flickers?|clicks?|vibrates?|sags?|leans?)\b/;

/** Two flaws of one thing may be one; flaws of two things are two, whatever words they share. */
export function sameThing(item: Standing, mine: string, words: ReadonlySet<string>): boolean {
  return item.thing === null ? item.words.has(mine) : item.words.has(mine) || words.has(item.head);
}

const SIDES = stems(
  'left right front back other first second third last one it they them that upper lower top bottom same',
);
