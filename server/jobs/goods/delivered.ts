import { remembered } from '../../../parser/remembered.ts';
import type { MaterialStatus } from '../../../parser/types.ts';
import { NUMBER, numberOf } from '../said/numbers.ts';
import { openNeed, toBuy } from './left.ts';
import { meant, shortFor } from './named.ts';
import { packOf, piecesOf } from './pieces.ts';
import type { Goods, Position } from './position.ts';

/**
 * Goods of the order told as come: how many are here, how many of them are amiss and go back, and whether others are on their
 * way for those. Common practice in how people talk, no source.
 */
export interface Delivered {
  position: Position;
  status: Extract<MaterialStatus, 'bought' | 'returned' | 'ordered'>;
  count: number;
  /** Nobody wants them any more: they came, and are not asked for again. */
  unwanted: boolean;
  start: number;
  end: number;
}

const PACK =
  '(?:boxes|box|bags?|sacks?|rolls?|tubes?|tubs?|cans?|tins?|buckets?|pails?|sheets?|sticks?|lengths?|pieces?|bundles?|packs?|pallets?|cartons?|cases?|of (?:them|em|those))';
/** "Tiles here only 4 boxes of 5, ...", "conc deliverd 24 bags", "post bases all here", "the other two tubes turned up". */
const CAME =
  /^\s*(?:(?:so|and|ok|okay|right|also|the|all|both) )*([a-z0-9][a-z0-9 '/-]{1,40}?)(?:,|:|'s|'re)?(?: (?:is|are|was|were|all|both|finally|just|now|has|have|been|got))* (?:here|came|come|arrived|delivere?d|turned up|showed up|dropped off|landed)\b(?! (?:off|out|loose|apart|down|undone|unglued|on|up|at the|from)\b)/;
const AMISS =
  '(?:split|damaged|broken|broke|cracked|(?:the )?wrong|bent|chipped|scratched|busted|torn|ripped|dented|warped|smashed|crushed|faulty|bad|no good|short|wet|twisted|bowed)';
const HOW_MANY = new RegExp(`^[,:]?(?: (?:but|with|only|just|all))* (${NUMBER})(?: ${PACK})?\\b(?! ?(?:"|'|mm|x\\d))`);
const SPOILED = new RegExp(
  `(?:[, ]|\\b(?:but|and|with|had) )(${NUMBER}|a|another)(?: ${PACK})?(?: (?:is|are|was|were|came|got|has|had|came in))*(?: all)? ${AMISS}\\b`,
);
const GOES_BACK =
  /\b(?:(?:took|take|takin|taking|taken|sent|send|sendin|sending|gave|giving|go|goes|going|gone|went|brought|bringing|refused|handed)(?: (?:it|that|them|those|one|both|the [a-z]+))? (?:back|bk)|return(?:ed|ing)|refused|rejected|back on the truck)\b/;
const REPLACED =
  /\b(?:replacements?|new (?:one|ones)|another(?: one)?|swaps?|exchange)\b[^.;!?\n]*?\b(?:mon|tues?|wed|thurs?|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|tmrw|tonight|next|coming|comes|ordered|on order|on (?:its|the) way|this week|due)\b/;
const NOT_WANTED =
  /\b(?:don't|dont|do not|didn't|didnt|no longer) (?:even )?(?:need|want) (?:it|them|those|that|these)\b/;
/** "Addy n grout ok", "hinges good": said beside what came. */
const IN_ORDER =
  /^\s*((?:the |both )?[a-z0-9][a-z0-9 ,&'/-]{1,50}?)(?: (?:is|are|was|were|all|both))* (?:ok|okay|good|fine|correct|all there|both there|there too|here too|as ordered)\s*(?:,|\bbut\b|$)/;

const mayTell = remembered((said) =>
  /\b(?:here|came|come|arrived|deliver|turned up|showed up|dropped|landed)/.test(said),
);

/** Every place in a text, lower case, that tells of goods of the order as come. */
export function delivered(said: string, goods: Goods): Delivered[] {
  if (!mayTell(said)) return [];
  const out: Delivered[] = [];
  const awaited = (p: Position) => openNeed(p) || p.ordered.compare(0) > 0;
  for (const { 0: sentence, index } of said.matchAll(/(?:[^.;!?\n]|[.](?=\d))+/g)) {
    const came = CAME.exec(sentence);
    const [piece] = came ? piecesOf(came[1]!, index) : [];
    // "Tubes" are sonotubes before they are what caulk comes in.
    const pack = piece ? packOf(piece) : null;
    const position =
      (pack && shortFor(goods, pack, awaited)) || (piece ? meant(goods, piece.words, awaited, piece.pack) : null);
    if (came && piece && position) {
      const rest = sentence.slice(came[0].length);
      const due = toBuy(position)?.add(position.ordered).valueOf() ?? null;
      const told = HOW_MANY.exec(rest);
      const spoiled = SPOILED.exec(rest);
      const unwanted = NOT_WANTED.test(rest);
      // "Worktops came, 1 is damaged": the count is of the spoiled ones.
      const count = told && !(spoiled && spoiled.index < told[0].length) ? numberOf(told[1]!) : (piece.count ?? due);
      if (count === null) continue;
      // What is said behind these words may be a new need.
      const until = Math.max(told ? told[0].length : 0, spoiled ? spoiled.index + spoiled[0].length : 0);
      const span = { start: index, end: index + came[0].length + until };
      out.push({ position, status: 'bought', count, unwanted, ...span });
      const bad = spoiled && GOES_BACK.test(rest) ? (numberOf(spoiled[1]!) ?? 1) : 0;
      if (bad > 0) out.push({ position, status: 'returned', count: bad, unwanted, ...span });
      if (bad > 0 && REPLACED.test(rest)) out.push({ position, status: 'ordered', count: bad, unwanted, ...span });
      continue;
    }
    const fine = out.length ? IN_ORDER.exec(sentence) : null;
    if (!fine) continue;
    for (const { words, count, start, end } of piecesOf(fine[1]!, index + fine[0].indexOf(fine[1]!))) {
      const own = meant(goods, words, awaited);
      const all = own && (count ?? toBuy(own)?.valueOf() ?? null);
      if (own && all) out.push({ position: own, status: 'bought', count: all, unwanted: false, start, end });
    }
  }
  return out;
}
