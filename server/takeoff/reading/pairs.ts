import { figureAt, type Said, saying } from './said.ts';

/** Two figures by one another: the size of goods, lumber's nominal size, or of a place. */
export interface Pair {
  ids: readonly [number, number];
  /** `12x24`. */
  size: string;
  lumber: boolean;
  /** A side in feet or metres: a place, no size of goods. */
  place: boolean;
}

export const pairsIn = (said: Said): Pair[] =>
  [...said.words.matchAll(saying('<LN> ?(?:x|by) ?<LN>', 'g'))].map((match) => ({
    ids: [Number(match[1]), Number(match[2])],
    size: `${figureAt(said, match[1]).value.toString()}x${figureAt(said, match[2]).value.toString()}`,
    lumber: lumber(said, match),
    // "Floor is 12 ft by 24 ft" is no 12x24 tile.
    place: [match[1], match[2]].some((id) => /^(?:ft|m)$/.test(figureAt(said, id).unit ?? '')),
  }));

const PLACE_BEFORE =
  /\b(?:closet|nook|pantry|hall(?:way)?|alcove|landing|niche|bath(?:room)?|bedroom|kitchen|den|entry|office|vestibule|mud ?room|pads?|slabs?|platform|stoop|patio)(?:,? (?:that|which|it))?(?:'s| is|,|:)? (?:about )?(?:an? )?$/;

/** "Six windows, every one of them two by three". */
const EACH_OPENING =
  /\b(?:windows?|doors?|openings?)\b[^{]*\b(?:every one|each|all)(?: of (?:them|those))?(?: is| are)? $/;

const POURED = /\b(?:pads|slabs)\b[^.;]*(?:,|and)(?: an?| one| another| \{[NC]\d+\})?(?: at)? ?$/;

/** `2x4`, `1x6`: lumber by its nominal size, both bare, the first 1 or 2. */
function lumber(said: Said, match: RegExpMatchArray): boolean {
  const [a, b] = [figureAt(said, match[1]), figureAt(said, match[2])];
  const after = said.words.slice((match.index ?? 0) + match[0].length);
  if (
    /^ ?(?:x|by|wide|long|high|room|area|floor|patch|hatch|opening|window|door|vent|skylight|hole|closet|landing|pad)\b/.test(
      after,
    )
  )
    return false;
  // "Closet 2 by 6" is a place's size, "two pads 4 by 4 and one 6 by 6" are two.
  const before = said.words.slice(0, match.index);
  if (EACH_OPENING.test(before)) return false;
  if (PLACE_BEFORE.test(before) || (POURED.test(before) && !/^ ?(?:s\b|posts?|forms?|lumber|stakes?)/.test(after)))
    return false;
  return (
    a.unit === null &&
    b.unit === null &&
    [1, 2, 4, 6].includes(a.value.valueOf()) &&
    [2, 3, 4, 6, 8, 10, 12].includes(b.value.valueOf()) &&
    (a.value.valueOf() <= 2 || b.value.valueOf() <= 6)
  );
}
