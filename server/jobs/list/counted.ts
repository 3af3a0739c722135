/** How many of counted things were wanted, and how many of them a note tells as done: "5 rollers seized", "all 4 are in". */
import { remembered } from '../../../parser/remembered.ts';
import { stem } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import { numberOf } from '../said/numbers.ts';
import type { Standing } from './board.ts';

/** Behind a number: a size, not a count. */
const UNIT =
  /^(?:x|by|inch(?:es)?|in|ft|foot|feet|mm|cm|m|metres?|meters?|yards?|gal(?:lons?)?|coats?|tubes?|bags?|box(?:es)?|hours?|days?|weeks?|minutes?|pm|am|amp|volts?|screws?|nails?|bolts?)$/;
/** Words that may stand between a count and the thing. */
const BETWEEN = 3;

/** Every word by stem, with the count that it tells; null for one that tells none, or a size. */
const tokensOf = remembered((words): readonly { stem: string; count: number | null }[] => {
  const tokens = lowered(words).match(/[a-z0-9']+/g) ?? [];
  return tokens.map((word, at) => ({
    stem: stem(word),
    count: UNIT.test(tokens[at + 1] ?? '') ? null : numberOf(word),
  }));
});

/** The count of a thing in words: "5 paddles", "two of the stack lights", "rollers 5 seized", "paddles I make it seven". */
function countOf(head: string, words: string): number | null {
  const tokens = tokensOf(words);
  const at = tokens.findIndex((token) => token.stem === head);
  if (at < 0) return null;
  for (let back = 1; back <= BETWEEN; back++) {
    const count = tokens[at - back]?.count ?? null;
    if (count !== null) return count;
  }
  const behind = tokens[at + 1]?.count ?? null;
  if (behind !== null) return behind;
  const made = /\b(?:make it|makes|it's|that's|there's|total of|counted) (\w+)/.exec(lowered(words));
  return made ? numberOf(made[1]!) : null;
}

/** How many are wanted: the count told last, before this note; null where nobody counted. */
const wantedOf = ({ head, history }: Standing, entry: string): number | null =>
  history.reduce<number | null>(
    (count, { words, entry: told }) => (words === null || told === entry ? count : (countOf(head, words) ?? count)),
    null,
  );

const POINTS = /\b(\w+) (?:more )?of (?:them|em|'em|those|these)\b/;
const STANDS =
  /\b(?:all |the |got |just |only )?(\w+)(?: more)?(?: are| is|'s|'re|'ve)? (?:in|on|up|down|hung|done|fitted|set)\b(?! \d)/;
/** What was got is not yet put in. */
const GOT = /\b(?:had|came|bought|picked up|ordered|in stock|backordered)\b/;
const MORE = /\b(?:more|another|further)\b/;

/** What words tell as done, whichever thing is meant. */
const doneIn = remembered((words) => {
  const said = lowered(words);
  return {
    got: GOT.test(said),
    pointed: numberOf(POINTS.exec(said)?.[1] ?? ''),
    stands: numberOf(STANDS.exec(said)?.[1] ?? ''),
    more: MORE.test(said),
  };
});

/** How many a note tells as done; null where it counts none of them. */
function doneOf(head: string, words: string): number | null {
  const { got, pointed, stands } = doneIn(words);
  return got ? null : (pointed ?? countOf(head, words) ?? stands);
}

/** Takes down how many of an item's things are done by these words, and gives how many are still to do; null where nothing is counted, or nothing is left. */
export function stillToDo(item: Standing, entry: string, quote: string): number | null {
  const done = doneOf(item.head, quote);
  const wanted = done === null ? null : wantedOf(item, entry);
  if (done === null || wanted === null) return null;
  item.made = doneIn(quote).more ? item.made + done : Math.max(item.made, done);
  return item.made < wanted ? wanted - item.made : null;
}
