import { figureAt, lengthIn, type Said, saying, sentencesOf } from '../reading/said.ts';
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
  if (/\bhangers?\b/.test(words) && told.item === 'joist') told.hangers = hangersIn(said);
  const rails = saying(
    '<N>(?: \\{L\\d+\\}| [a-z]+)? rails?(?: (?:a|per|each|every|to a|between|in each)\\b|,|\\.|$| and)',
  ).exec(words);
  if (rails && free(told, rails[1]) && told.item === 'fence post') {
    told.rails = figureAt(said, rails[1]).value.valueOf();
    claim(told, rails[1]);
  }
  const railLong = saying('<L> rails?\\b').exec(words);
  if (told.rails && railLong && free(told, railLong[1])) {
    const rail = figureAt(said, railLong[1]);
    told.railSize ??= `${rail.value.toString()} ${rail.unit}`;
    claim(told, railLong[1]);
  }
  if (told.item === 'baluster' && TOP_AND_BOTTOM.test(words)) told.rails = 2;
  if (told.item === 'fence post' && PANELS.some((p) => saying(p).test(words))) told.panels = true;
  if (/\bplates?\b/.test(words) && told.item === 'stud') platesIn(said, told);
  const spots = saying(EXTRA_SPOTS, 'g');
  for (const m of told.item === 'stud' ? words.matchAll(spots) : []) {
    if (!free(told, m[1])) continue;
    told.extra = (told.extra ?? 0) + figureAt(said, m[1]).value.valueOf();
    claim(told, m[1]);
  }
  if (told.extra) return;
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

/** "A top and a bottom rail each section". */
const TOP_AND_BOTTOM = /\btop (?:rail )?and (?:an? |the |one )?bottom (?:rail|one)s?\b/;

/** "Hanger at both ends", "one hanger a joist": of the sentence that speaks of hangers, not of where joists stand. */
function hangersIn(said: Said): number {
  const words = sentencesOf(said.words)
    .filter((s) => /\bhangers?\b/.test(s))
    .join('. ')
    .replace(/\bwith (?:\{N\d+\}|one) at (?:each|either|both) ends?\b/g, '');
  const told = saying('<N>(?: hangers?)? (?:a|per|each|to a) joist').exec(words);
  if (told) return figureAt(said, told[1]).value.equals(1) ? 1 : 2;
  return /\b(?:each|both|either) ends?\b|\bends? of (?:each|every)\b|\btwo (?:hangers )?(?:a|per|each) joist/.test(
    words,
  )
    ? 2
    : 1;
}

/** "Plates is three times the wall out of 10 foot 2x4s". */
const PLATE_STICKS = saying(
  '\\bplates?\\b[^.{]*\\b(?:out of|in|from|come in|are) (?:\\{N\\d+\\} ?(?:x|by) ?\\{N\\d+\\},? )?<L>(?= (?:\\{N|run|footers?|sticks?|lengths?|stock|boards?)|[.,;]|$)|\\bplates?\\b[^.]*, <L>(?=[.,;]|$)',
);

/** The figure is the length that plates come in. */
export const isPlateStick = (words: string, id: number): boolean =>
  PLATE_STICKS.exec(words)?.slice(1).includes(String(id)) ?? false;

function platesIn(said: Said, told: RowTold): void {
  const { words } = said;
  const top = saying('(?:<NC>|\\b(single|one|double|two)) top\\b').exec(words);
  const tops = !top ? 2 : top[2] ? (/single|one/.test(top[2]) ? 1 : 2) : figureAt(said, top[1]).value.valueOf();
  told.plates = tops + 1;
  for (const m of words.matchAll(saying('<NC> (?:top|bottom)\\b', 'g'))) claim(told, m[1]);
  told.treated =
    /\bbottom(?:'s| is| one's| one is| plate is| plate)? (?:an? |the )?(?:treated|pt|pressure treated)\b|\btreated (?:bottom|sill|sole)\b/.test(
      words,
    ) || null;
  const sticks = PLATE_STICKS.exec(words);
  const id = sticks?.slice(1).find(Boolean);
  if (!id || !free(told, id)) return;
  told.plateStick = lengthIn(figureAt(said, id), 'in');
  claim(told, id);
}

/** "Add four for corners and three for the door". */
const EXTRA_SPOTS =
  '<NC>(?: more| extra)?(?: studs?)? (?:for|at) (?:the |each )?(?:corners?|doors?|windows?|openings?|intersections?|tees?|backing|ends?)\\b';

/** "Pickets are 1x6, and get 5 over": of several kinds, the one that its sentence names. */
function isOfOthers(words: string, at: number, item: string, kinds: readonly string[]): boolean {
  const sentence = sentenceAt(words, at);
  const named = kinds.filter((k) => KINDS.find((kind) => kind.item === k)!.named.test(sentence));
  return named.length > 0 && !named.includes(item);
}
