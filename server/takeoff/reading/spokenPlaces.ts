import type { Mend } from './mend.ts';

const WHICH = '(?:back|front|side|end|left|right|other|long|short|far|near|big|small|first|second|third|last)';

/** "And the back one twenty": which wall, and how long. */
const whichOne: Mend = (words, figures) =>
  words.replace(new RegExp(`\\b(${WHICH}) \\{N(\\d+)\\}`, 'g'), (all, which: string, id: string) => {
    const figure = figures[Number(id)]!;
    if (
      !/^one[ -](?!hundred)[a-z]/i.test(figure.quote) ||
      figure.value.compare(100) < 0 ||
      figure.value.compare(200) >= 0
    )
      return all;
    figures[Number(id)] = { ...figure, value: figure.value.sub(100), quote: figure.quote.slice(4) };
    return `${which} one {N${id}}`;
  });

/** "Yields 0.01 of a cube": a cubic metre. */
const ofACube: Mend = (words, figures) =>
  words.replace(/\{N(\d+)\} of a (?:cube|cubic (?:metre|meter))\b/g, (_, id: string) => {
    figures[Number(id)] = { ...figures[Number(id)]!, unit: 'cu m', kind: 'volume', sure: true };
    return `{V${id}}`;
  });

const PAIR =
  '\\{[LN]\\d+\\}(?: (?:foot|feet|ft))?(?: (?:wide|long|deep))? ?(?:x|by) ?\\{[LN]\\d+\\}(?: (?:foot|feet|ft))?';
const BACK =
  "(?:hang on|hold on|no wait|wait no|wait|scratch that|strike that|make that|correction|sorry|my bad|i lied|i mean|actually|let me (?:check|see|look)|no,|nope|shaking (?:her|his) head|that's wrong|wrong)";
const SIZE_TAKEN_BACK = new RegExp(
  `(${PAIR})(?=((?:(?!${PAIR})[^{.;]){0,40}\\b${BACK}\\b(?:(?!${PAIR})[^{;]){0,60}?)(${PAIR}))`,
  'g',
);

/** "It's 9 by 12 and a half, hang on, it's 9 by 11 and a half": the size said last, where one side is the same or nothing else is named. */
const sizeTakenBack: Mend = (words, figures) =>
  words.replace(SIZE_TAKEN_BACK, (all, old: string, between: string, now: string) => {
    const sides = (pair: string) => [...pair.matchAll(/\{[LN](\d+)\}/g)].map(([, id]) => figures[Number(id)]!.value);
    const [before, after] = [sides(old), sides(now)];
    const shared = before.some((a) => after.some((b) => a.equals(b)));
    const plain = new RegExp(
      `^[ ,]*(?:${BACK}[ ,]*)+(?:it's|it is|that's|more like|is|make it)?(?: [a-z]+){0,2} $`,
    ).test(between);
    return shared || plain ? '' : all;
  });

/** "14 foot of counter, 18 inches up": a stretch and how high it goes. */
const stretchAndUp: Mend = (words) =>
  words.replace(
    /(\{L\d+\}) of (?!slack|wire|cable|pipe|bead|joint)[a-z]+(?: [a-z]+)?(?:,| and|, and) (\{L\d+\})(?= (?:up|high|tall)\b)/g,
    '$1 by $2',
  );

/** "Caulk round 4 tubs": tubs that stand there, and no packs. */
const roundTubs: Mend = (words, figures) =>
  words.replace(
    /(\b(?:round|around|for|at|on) (?:the |all )?)\{K(\d+)\}(?=,| each\b| all\b)/g,
    (all, lead: string, id: string) => {
      const figure = figures[Number(id)]!;
      if (figure.unit !== 'tub' || figure.value.d !== 1n) return all;
      figures[Number(id)] = { ...figure, unit: null, kind: null, sure: false };
      return `${lead}{N${id}} tubs`;
    },
  );

/** "Ten foot and two eights": so many of a length, told in the plural. */
const countOfPlural: Mend = (words, figures) =>
  words.replace(/\{N(\d+)\} \{N(\d+)\}(?! ?(?:x|by)\b)/g, (all, n: string, id: string) =>
    /^(?:sixes|eights|nines|tens|twelves|fourteens|sixteens|twenties)$/i.test(figures[Number(id)]!.quote) &&
    figures[Number(n)]!.value.compare(12) <= 0
      ? `{N${n}} at {N${id}}`
      : all,
  );

/** Sizes of places that only their neighbours tell, before the others are put together. */
export const PLACE_MENDS: readonly Mend[] = [whichOne, ofACube, roundTubs, countOfPlural];

/** After all sizes have been put together. */
export const TAKEN_BACK_MENDS: readonly Mend[] = [stretchAndUp, sizeTakenBack];
