/**
 * A danger that is there, whoever works on it and whatever becomes of the work: its caution stands, it stays on the list, and
 * only words that tell of it as dealt with close it. Which signs tell of a danger: the sources in `../hazards.ts`, and common
 * practice in how people talk of them, no source.
 */
export interface Danger {
  /** Of `../hazards.ts`. */
  hazard: string;
  /** Words that tell that it is there. */
  told: RegExp;
  /** What is said of it once it was dealt with: told as over, and not that somebody was called or that something new is bad. */
  dealtWith: RegExp;
  /** Work beside it that leaves it as it is, whatever else the words say. */
  onlyHides?: RegExp;
}

export const words = (...patterns: readonly string[]): RegExp => new RegExp(`\\b(?:${patterns.join('|')})`);

export const MENDED =
  '(?:fixed|repaired|replaced|swapped|redid|redone|remade|rebuilt|sorted (?:it|that|out)|(?:took|taken) care of)\\b';
/** "New flue's in", "put in a new breaker". */
export const newIn = (things: string): string =>
  `new (?:\\w+ )?(?:${things})(?:'s| is| are|'re)?(?: \\w+)? (?:in|on|up|set)\\b|(?:put|installed|hung|set|ran|added)\\b[^.]{0,16}\\bnew (?:\\w+ )?(?:${things})`;

/** Something is so, told right behind the thing: "is really", "feels a bit", "keeps". */
export const IS =
  "(?:'s|'re| is| are| was| were| feels?| felt| gets?| got| getting| runs?| running| keeps?| kept| starts?| started| goes| going| came| comes| looks?| looked| all| both)*(?: (?:really|very|real|so|pretty|too|kinda|a bit|a little|kind of|always|still|all|right|clean|clear|just|half|bone|badly|been))*";
