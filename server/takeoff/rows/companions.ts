import { figureAt, type Said, saying } from '../reading/said.ts';
import { sentenceAt } from '../reading/wanted.ts';
import { claim, free, KINDS, NUMBER, numberOf, type RowTold } from './row.ts';

/** "Panels 2.4 m wide", "eight foot panels". */
export const PANELS = [
  '\\bpanels?(?: (?:are|is|come|at|all))* <L>(?: (?:wide|long|each))?',
  '<L>(?: (?:wide|long))? (?:[a-z]+ ){0,2}panels?\\b',
];

/** Hangers, rails, plates and spare pieces. */
export function companionsIn(said: Said, told: RowTold, kinds: readonly string[]): void {
  const { words } = said;
  if (/\bhangers?\b/.test(words) && told.item === 'joist')
    told.hangers =
      /\b(?:each|both|either) ends?\b|\bends? of (?:each|every)\b|\btwo (?:hangers )?(?:a|per|each) joist/.test(
        words,
      ) || saying('<N>(?: hangers)? (?:a|per|each|to a) joist').test(words)
        ? 2
        : 1;
  const rails = saying(
    '<N>(?: \\{L\\d+\\}| [a-z]+)? rails?(?: (?:a|per|each|every|to a|between|in each)\\b|,|\\.|$| and)',
  ).exec(words);
  if (rails && free(told, rails[1]) && told.item === 'fence post') {
    told.rails = figureAt(said, rails[1]).value.valueOf();
    claim(told, rails[1]);
  }
  if (told.item === 'fence post' && PANELS.some((p) => saying(p).test(words))) told.panels = true;
  if (/\bplates?\b/.test(words) && told.item === 'stud') told.plates = /\b(?:single|one) top\b/.test(words) ? 2 : 3;
  for (const pattern of [
    `(?:plus|and|add|get|with|throw in|order|,) ?(?:on )?${NUMBER} (?:[a-z]+ )?(?:extra|spare|spares|more)\\b`,
    `${NUMBER} (?:extra|spare|more)\\b`,
    `(?:plus|and|add|get) ${NUMBER} over\\b`,
    `\\b(?:extra|plus|add)(?: on)? ${NUMBER}(?! ?(?:percent|%|pct|ft|in|x|rails?|plates?))`,
  ]) {
    const m = saying(pattern).exec(words);
    if (!m || (m[1] && !free(told, m[1])) || isOfOthers(words, m.index, told.item, kinds)) continue;
    const count = numberOf(said, m[1], m[2]);
    if (!Number.isInteger(count) || count > 200) continue;
    told.extra = count;
    claim(told, m[1]);
    break;
  }
}

/** "Pickets are 1x6, and get 5 over": of several kinds, the one that its sentence names. */
function isOfOthers(words: string, at: number, item: string, kinds: readonly string[]): boolean {
  const sentence = sentenceAt(words, at);
  const named = kinds.filter((k) => KINDS.find((kind) => kind.item === k)!.named.test(sentence));
  return named.length > 0 && !named.includes(item);
}
