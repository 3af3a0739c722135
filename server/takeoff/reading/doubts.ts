import { feet, thickness } from './lengths.ts';
import { figureAt, type Said, saying } from './said.ts';
import { type Extent, SIDE } from './shapes.ts';

/** "Not 6", "instead of 6": the figure is the old one; a side of its own beside it stands in its place. */
export function contradicted(said: Said, used: Set<number>, out: Extent): void {
  const side = saying(`(?<!(?:x|by) )<LN>${SIDE},? (?:not|instead of|rather than) (?:the )?<LN>(?! ?(?:x|by))`, 'g');
  for (const m of said.words.matchAll(side)) {
    const [to, from] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const [now, before] = [feet(said, to, from), feet(said, from, to)];
    if (!now || !before || used.has(Number(m[1])) || used.has(Number(m[2]))) continue;
    out.corrected.push({ from: before, to: now });
    for (const id of [m[1], m[2]]) used.add(Number(id));
  }
  const thick = saying(
    '<LN>(?: (?:in|inch|inches))? (?:thick|deep),? (?:not|instead of|rather than) (?:the )?<LN>',
    'g',
  );
  for (const m of said.words.matchAll(thick)) {
    const [now, before] = [thickness(said, figureAt(said, m[1])), thickness(said, figureAt(said, m[2]))];
    if (!now || !before || used.has(Number(m[1]))) continue;
    out.corrected.push({ from: before, to: now });
    for (const id of [m[1], m[2]]) used.add(Number(id));
  }
  const old = saying('\\b(?:not|instead of|rather than) (?:the )?<LN>(?: ?(?:x|by) ?<LN>)?', 'g');
  for (const m of said.words.matchAll(old)) for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
}

/** Two figures for one length, or words of not knowing. */
export function doubtIn(said: Said, used: Set<number>): string | null {
  for (const m of said.words.matchAll(
    saying(
      '<LN>(?: (?:wide|long|high|deep|tall))?,? (?:or (?:is it |was it |maybe |it might be )?|maybe |could be )<LN>(?: (?!sheets)[a-z]+)?',
      'g',
    ),
  )) {
    if (used.has(Number(m[1])) || used.has(Number(m[2]))) continue;
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const unit = b.unit ?? a.unit ?? (said.figures.some((f) => f.unit === 'm') ? 'm' : 'ft');
    if (a.value.equals(b.value)) continue;
    return `${a.value.toString()} or ${b.value.toString()} ${unit}`;
  }
  const unsure =
    /\b(?:couldn't (?:hear|read|make out)|can't (?:read|remember|recall)|don't (?:remember|recall|know|agree)|not sure|nobody(?:'s| is| seems) sure|no one(?:'s| is) sure|(?:turned|got) it (?:a)?round|forg[eo]t(?= to measure| what| how|,|\.|$| (?:the|its) (?:size|length|width|depth|height|number|measure))|have to (?:check|measure)|gotta (?:check|measure)|need to (?:re)?measure|didn't measure|haven't measured|no idea|eyeballed|guessing|smudged|can't make out)\b/.exec(
      said.words,
    );
  return unsure ? unsure[0] : null;
}

/** The same word after both sides: "six smoots by four smoots". */
const SIDES_IN = saying('<N> ([a-z]{3,}s) (?:x|by) <N> \\2\\b');
/** A pack for a side: what was said was no measure, and was heard as the nearest word. */
const SIDES_IN_PACKS = saying('<K> (?:x|by) <K>(?! ?(?:x|by))');
/** Pieces may be counted along both sides. */
const PIECES = /^(?:tiles|rows|boards|pieces|sheets|panels|blocks|bricks|pavers|planks|squares|studs|joists|times)$/;

/** Old or made-up measures, on one side of a size. */
const ODD_SIDE = saying(
  '<NC> (furlongs?|cubits?|smoots?|fathoms?|chains|rods|paces|spans|hands|leagues?|ells)(?: (?:wide|long))? (?:x|by) \\{',
);

/** The same of a run. */
const ODD_RUN = saying('<NC> (furlongs?|cubits?|smoots?|fathoms?|leagues?|parsecs?)\\b');

/** Words of a size whose unit is none that measures; null where all sizes are in feet, inches or metres. */
export function unknownUnitIn(said: Said): string | null {
  const named = SIDES_IN.exec(said.words);
  if (named && !PIECES.test(named[2]!)) return `${figureAt(said, named[1]).value.toString()} ${named[2]}`;
  const odd = ODD_SIDE.exec(said.words) ?? ODD_RUN.exec(said.words);
  if (odd) return `${figureAt(said, odd[1]).value.toString()} ${odd[2]}`;
  const packs = SIDES_IN_PACKS.exec(said.words);
  const quote = packs ? figureAt(said, packs[1]).quote.trim() : '';
  return /[a-z]{3,}$/i.test(quote) && figureAt(said, packs![1]).unit !== 'sheet' ? quote : null;
}
