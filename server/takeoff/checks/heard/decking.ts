import Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { deckBoards } from '../deckBoards.ts';
import { inchesOf, lumberIn, matched, type Reader } from './reader.ts';

const SPACING = [
  saying(
    '\\bjoists?\\b[^.{]{0,30}<LN>(?: inch(?:es)?)?(?: on cent(?:er|re)s?| o\\.?c\\b| apart| centers|,|\\.|$| and\\b)',
  ),
  saying('<LN>(?: inch(?:es)?)?(?: on cent(?:er|re)s?| o\\.?c)?(?: for the| under the)? joists?\\b'),
];
const DIAGONAL = /\b(?:diagonal(?:ly)?|on (?:a|an|the) (?:angle|bias)|herringbone|forty[- ]?five|45s?)\b/;
const SQUARE = /\b(?:square to|straight across|perpendicular|across the joists|running straight)\b/;
const ASKED = /\?|\b(?:ok\b|okay|enough|too far|far apart|will (?:it|that)|work|legal|pass|code|alright|all right)\b/;

/** Deck boards over joists: where their thickness and the joists' spacing are told together, and it is asked or angled. */
export const decking: Reader = (said) => {
  const { words } = said;
  if (!/\bdeck(?:ing)?\b|\bboards\b/.test(words) || !/\bjoists?\b/.test(words)) return [];
  const composite = /\b(?:composite|plastic|pvc decking)\b/.test(words);
  const thick = thicknessIn(said);
  const spacing = SPACING.map((pattern) => matched(said, pattern)).find((v) => v !== null);
  if (!spacing || spacing.compare(8) < 0 || spacing.compare(48) > 0) return [];
  const at45 = said.figures.some((f) => f.unit === null && f.value.equals(45));
  const diagonal = at45 || DIAGONAL.test(words) ? true : SQUARE.test(words) ? false : null;
  if (!(thick || composite) || !(diagonal || ASKED.test(words))) return [];
  return [deckBoards({ spacing, thick, diagonal, composite })];
};

/** "Five quarter", `5/4`, 2x6 boards: nominal inches. The joists' own size is no board's. */
function thicknessIn(said: Said): Fraction | null {
  if (/\bfive[- ]quarters?\b|\b5\/4\b/.test(said.words)) return new Fraction(5, 4);
  if (said.figures.some((f) => inchesOf(f)?.equals(new Fraction(5, 4)) && /five quarter|5\/4/i.test(f.quote)))
    return new Fraction(5, 4);
  const named = lumberIn(said);
  return named?.thick === 2 && named.deep.compare(6) <= 0 ? new Fraction(2) : null;
}
