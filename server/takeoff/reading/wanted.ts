import type { Said } from './said.ts';

/** Words that ask for goods. */
const WANTS =
  /\b(?:need|needs|needed|order|reorder|buy|buying|pick up|pickup|get|getting|grab|send|bring|want|wants|short|shopping|figure|reckon|work out|add up|price|quote|how (?:many|much)|what(?:'s| is| do| does| will)? (?:it|that|i|we|do i|do we)? ?(?:take|need|come)|going to take|gonna take|it'll take|will take|material list|take ?off)\b/;

/** Words that ask for a number. */
export const ASKS =
  /\bhow (?:many|much)\b|\b(?:figure|work out|add up|reckon) (?:out )?(?:the|what|how|it|me|us|up|both|on|in)\b|\bwhat do (?:i|we) need\b/;

/** Work that has been done, goods that have been used: nothing is to be bought for it. */
const DONE =
  /\b(?:framed|hung|set|built(?!(?: |-)in\b)|installed|laid(?! (?:tight|loose|dry|straight|diagonal|herringbone|stacked|in (?:a )?(?:running|stack|straight)))|poured|ran|pulled|tiled|grouted|painted|primed|caulked|sealed|sided|shingled|finished|taped|mudded|insulated|decked|spread|used|took|put (?:in|on|up|down)|went (?:in|on|up|down)|got (?:it|them|all)|wrapped up|knocked out)\b|\b(?:is|are|'s|'re|was|were|all|already|it's) (?:all )?(?:up|down|in|on|done|hung|set|laid|poured|framed|installed|finished|built|tiled)(?: (?:already|now|today|and)\b|[,.]|$)/;

const NOT_YET =
  /\b(?:not|isn't|aren't|ain't|before|until|once|when|after|gets?|get it|will be|to be|going to be|gotta be)\b/;

/** The sentence of the words around a place in them. */
export function sentenceAt(words: string, at: number): string {
  const start = Math.max(words.lastIndexOf('. ', at), words.lastIndexOf('; ', at), -1) + 1;
  const ends = ['. ', '; '].map((mark) => words.indexOf(mark, at)).filter((end) => end >= 0);
  return words.slice(start, ends.length ? Math.min(...ends) : words.length);
}

export const asks = (said: Said): boolean => ASKS.test(said.words);

export const wants = (words: string): boolean => WANTS.test(words);

/** True where the words tell of work done, and ask for nothing. */
export const isDone = (words: string): boolean => DONE.test(words) && !NOT_YET.test(words) && !wants(words);

const FOR_OTHERS =
  /\b(?:need|needs|get|order|grab|pick up|how (?:many|much))(?: (?:some|the|sanded|unsanded|white|gr[ae]y|bags?|boxes|tubes?|buckets?|of|more|enough))* (?:grout|thin ?set|mortar|adhesive|sealer|caulk|silicone)\b/;

/** "Grout for the utility floor: 14 square metres, tile is 600 x 300". */
const LISTED_FOR_OTHERS = /^(?:[a-z]+ ){0,3}(?:grout|thin ?set|mortar|adhesive|sealer)(?: for\b|:)/;

/**
 * "Need grout, 42 sq ft of 3x6 subway", "how many bags of thinset": what goes with other goods is asked for, and those
 * only stand at `mentions` for their size.
 */
export function onlyForOthers(words: string, mentions: readonly number[]): boolean {
  const m = FOR_OTHERS.exec(words);
  if (!m && LISTED_FOR_OTHERS.test(words)) return !mentions.some((at) => wants(sentenceAt(words, at)));
  if (!m || /^,? (?:and|plus|tile)\b/.test(words.slice(m.index + m[0].length))) return false;
  const before = (at: number) =>
    words
      .slice(Math.max(0, at - 40), at)
      .split(/[,.;]/)
      .at(-1)!;
  return !mentions.some((at) => wants(before(at)) && at < m.index);
}
