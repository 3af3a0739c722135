import type { Computed } from '../types.ts';
import { goodsNamed, noteTold } from './noteTold.ts';
import type { Ratio } from './ratios.ts';
import { readOnce } from './readOnce.ts';
import type { Said } from './said.ts';
import { isDone, sentenceAt, wants } from './wanted.ts';

/**
 * Notes that tell a size and how something is sold, of which nothing was reckoned and nothing asked: each is asked about
 * once, so that silence is never taken for "nothing to buy".
 */
export function unanswered(
  notes: readonly Said[],
  { lines, questions }: Pick<Computed, 'lines' | 'questions'>,
): Computed['questions'] {
  const answered = new Set([...lines.flatMap((l) => l.noteIds), ...questions.map((q) => q.noteId)]);
  const out: Computed['questions'] = [];
  for (const said of notes) {
    const ask = askOf(said);
    if (ask !== null && !answered.has(said.noteId)) out.push({ noteId: said.noteId, ask });
  }
  return out;
}

const askOf = readOnce((said): string | null => {
  const goods = goodsNamed(said).filter((g) => g.mentions.some((at) => !isDone(sentenceAt(said.words, at))));
  const { terms, extentFor, stock } = noteTold(said, [], goods[0]?.by);
  if (terms.ratios.length === 0 || stock.length > 0 || (isDone(said.words) && !wants(said.words))) return null;
  const sized = extentFor(goods[0]?.by ?? 'area').shapes.length > 0;
  const item = goods[0]?.item;
  if (!sized && terms.waste === null && !(item && TO_COME.test(said.words))) return null;
  if (!sized) return `What size is it for the ${item ?? `${packOf(terms.ratios)}`}?`;
  return item
    ? `The ${item} could not be reckoned: say its size, and what one ${packOf(terms.ratios)} covers.`
    : `What comes by the ${packOf(terms.ratios)} there? Nothing ordered until it is known.`;
});

/** The work is said to come. */
const TO_COME = /\b(?:next|tomorrow|ready)\b/;

const packOf = (ratios: readonly Ratio[]): string => ratios.at(-1)!.per.replace(/^each$/, 'piece');
