import type Fraction from 'fraction.js';
import { saying, sentencesOf } from '../../reading/said.ts';
import { balusterGap, guardHeight, handrailHeight } from '../guard.ts';
import { risers, stairHeadroom, stairWidth, treads } from '../stairs.ts';
import type { Verdict } from '../verdict.ts';
import { allMatched, inchesOf, matched, type Reader } from './reader.ts';

const HEIGHT = saying(
  '(?<!\\bcut (?:the |that |a )?)\\b(?:rail|railing|guard|guardrail)\\b[^.{]{0,30}<LN>|<LN>(?: inch)?(?: high| tall)? (?:railing|guardrail|guard)\\b|\\b(?:railing|guardrail|guard)\\b[^.{]{0,60}<LN>(?: inch(?:es)?)? (?:high|tall)\\b',
);
const HANDRAIL = saying('\\bhand ?rail\\b[^.{]{0,44}<LN>|<LN>(?: inch)?(?: high)? hand ?rail\\b');
const DROP = saying(
  "\\b(?:deck|porch|landing|balcony|platform|stoop|floor|loft)(?:'s| is| sits)?[^.{]{0,20}<LN> (?:off|above|up|over|from)\\b|<LN>(?: (?:foot|feet|ft))? down to\\b",
);
const GAP = saying(
  '\\b(?:balusters?|pickets?|spindles?)\\b[^.{]{0,30}<LN> (?:clear|apart|between|gap|gaps|space)|\\b(?:gaps?|spaces?|clear)\\b[^.{]{0,12}\\b(?:balusters?|pickets?|spindles?)\\b[^.{]{0,16}<LN>|<LN>(?: inch)? (?:gaps?|between|spaces?)[^.{]{0,16}\\b(?:balusters?|pickets?|spindles?)\\b',
);
const ON_STAIR = /\b(?:stairs?|steps|nosings?|treads?)\b/;

/** A handrail is a stair's where its own sentence says so, or where no deck is spoken of. */
function gripsStair(words: string): boolean {
  const sentence = sentencesOf(words).find((s) => /\bhand ?rail\b/.test(s)) ?? words;
  return ON_STAIR.test(sentence) || (ON_STAIR.test(words) && !/\b(?:deck|porch|balcony)\b/.test(words));
}

export const guards: Reader = (said) => {
  const { words } = said;
  const out: Verdict[] = [];
  const onStair = ON_STAIR.test(words) && !/\b(?:deck|porch|balcony|landing|loft)\b/.test(words);
  const grip = matched(said, HANDRAIL);
  if (grip && grip.compare(20) > 0 && grip.compare(60) < 0)
    out.push(
      gripsStair(words) ? handrailHeight(grip) : guardHeight({ drop: matched(said, DROP), height: grip, on: 'floor' }),
    );
  const height = matched(said, HEIGHT);
  if (height && height.compare(20) > 0 && height.compare(60) < 0)
    out.push(guardHeight({ drop: matched(said, DROP), height, on: onStair ? 'stair' : 'floor' }));
  const gap = matched(said, GAP);
  if (gap && gap.compare(12) < 0) out.push(balusterGap(gap, onStair ? 'stair' : 'floor'));
  return out;
};

/** One figure, or several told in a row; a figure that belongs to the other kind is left to it. */
const LIST = (other: string) => `((?:\\{[LN]\\d+\\}(?! ?(?:inch )?(?:${other}))(?:,? (?:and |then |to |or )?|$)?)+)`;
const MEASURE =
  "(?:'s|:|,)?(?: (?:are|is|was|were|at|be|comes?|came|out|to|measures?|measured|of|heights?|depths?|all|now|a|an|about|only|runs?|goes|going|each|on|the|this|these|top|bottom|stairs?|here))*";
// "Twelve treads" are counted; "twelve inch treads" and "a nine tread" are measured.
const RISE = saying(
  `\\b(?:rises?|risers?)\\b${MEASURE} ${LIST('run|treads?|wide|deep')}|{L(\\d+)} (?:inch )?(?:high )?risers\\b|{[LN](\\d+)} (?:inch )?(?:rise|riser)\\b`,
  'g',
);
const TREAD = saying(
  `\\btreads?\\b${MEASURE} ${LIST('rise|risers?|high')}|{L(\\d+)} (?:inch )?(?:deep )?treads\\b|{[LN](\\d+)} (?:inch )?(?:deep )?(?:tread|run)\\b`,
  'g',
);
const RUN = saying('\\brun\\b[^.{]{0,12}<LN>', 'g');
/** "Steps came out seven and three eighths, seven and a half": where a note speaks of risers those are their heights. */
const STEP_HEIGHTS = saying(
  `\\bsteps?(?: (?:came out|measured?|run|are|is|at|to|all))+ ${LIST('treads?|wide|deep|long')}`,
  'g',
);
const TOTAL = saying(
  '\\btotal rise\\b[^.{]{0,44}<LN>|<LN> (?:of )?total rise\\b|<LN>(?: (?:inches|inch))? (?:from|between) (?:the )?(?:top of (?:the )?)?(?:pad|slab|floor|landing|ground|finished floor|patio|subfloor)\\b[^.{]{0,24}\\b(?:to|and|up to) (?:the )?(?:top of (?:the )?)?(?:finished )?(?:deck(?:ing)?|floor|landing|porch|sub ?floor)\\b',
);
const STEPS = saying('<N> (?:equal |even |same )?(?:risers|rises|steps)\\b');
const WIDTH = saying('\\bstairs?\\b[^.{]{0,20}<LN> wide\\b|<LN> wide stairs?\\b');
const HEADROOM = saying('<LN>(?: of)? head ?room\\b|\\bhead ?room\\b[^.{]{0,30}<LN>');

/** Inches that a step can have. */
const plausible = (v: Fraction) => v.compare(3) > 0 && v.compare(16) < 0;

export const stairs: Reader = (said) => {
  const pair = /\brise\b.*\brun\b/.test(said.words) && !/\b(?:roof|rafters?|pitch|ridge|ramp)\b/.test(said.words);
  if (!pair && !/\b(?:stairs?|steps?|risers?|treads?|stringers?)\b/.test(said.words)) return [];
  const all = (pattern: RegExp) =>
    [...said.words.matchAll(pattern)]
      .flatMap((m) =>
        m[1] ? [...m[1].matchAll(/\d+(?=\})/g)].map(([id]) => id) : [m.slice(2).find((id) => id !== undefined)!],
      )
      .flatMap((id) => inchesOf(said.figures[Number(id)]) ?? [])
      .filter(plausible);
  // "Rise seven and a half, run ten": a run beside a rise is a tread's.
  const rise = /\brise(?:r?s)?\b/.test(said.words);
  const told = all(RISE);
  const total = matched(said, TOTAL);
  const steps = total && STEPS.exec(said.words);
  const reckoned = total && steps ? [total.div(said.figures[Number(steps[1])]!.value)] : [];
  const width = matched(said, WIDTH);
  const headroom = matched(said, HEADROOM);
  return [
    ...risers(reckoned.length ? reckoned : told.length ? told : rise ? all(STEP_HEIGHTS) : []),
    ...treads([...all(TREAD), ...(rise ? allMatched(said, RUN).filter(plausible) : [])]),
    ...(width ? [stairWidth(width)] : []),
    ...(headroom ? [stairHeadroom(headroom)] : []),
  ];
};
