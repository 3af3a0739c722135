/** Whether a flaw is of what was told just before. */
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Problem } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { stems } from '../said/verbs.ts';
import type { Standing } from './board.ts';
import type { Telling } from './items.ts';
import { headOf } from './match.ts';

/** "It's loose in the wall and there's no test button on it": both of the one thing just told of. */
export function sameBreath({ met, lead, board }: Telling, fact: Problem): Standing | null {
  const { area } = fact;
  const said = fact.quote.toLowerCase();
  const last = met.at(-1);
  const points =
    !wordsOf(fact.quote).has(headOf(fact.thing)) &&
    /\b(?:on|in|of|to|from|behind|under) (?:it|them)\b|\bthere$|^(?:so |and )*(?:it's|its|it|they're|they)\b/.test(
      said,
    );
  if (points && last && isLive(last) && last.problem && /^[\s,]*(?:and|so|plus|also|,)?[\s,]*$/.test(lead)) return last;
  // "Window won't lock, the latch is bent": what it does, and why.
  const cause = /\b(?:missing|loose|gone|stripped|bent|broken|broke|worn|rusted|cracked)$/.test(said);
  const symptom =
    /\b(?:won't|doesn't|can't|don't|not)\b/.test(last?.problem ?? '') || (cause && SYMPTOM.test(last?.problem ?? ''));
  if (symptom && last && isLive(last) && /^, *$/.test(lead) && sameArea(last.area, area)) return last;
  // "Sign bracket is loose, two anchors pulled out": a part of it, and why.
  if (last && isLive(last) && last.problem && isPartOf(fact, last) && sameArea(last.area, area) && BESIDE.test(lead))
    return last;
  // "Left one split too": which of them, not what.
  if (![...wordsOf(fact.thing)].every((word) => SIDES.has(word))) return null;
  const defect = wordsOf(fact.defect);
  return (
    [...board.items.slice(-20)].findLast(
      (item) => isLive(item) && item.problem && [...wordsOf(item.problem)].some((word) => defect.has(word)),
    ) ?? null
  );
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
