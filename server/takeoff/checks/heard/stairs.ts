import { saying } from '../../reading/said.ts';
import { balusterGap, guardHeight, handrailHeight } from '../guard.ts';
import { risers, stairHeadroom, stairWidth, treads } from '../stairs.ts';
import type { Verdict } from '../verdict.ts';
import { inchesOf, matched, type Reader } from './reader.ts';

const HEIGHT = saying(
  '(?<!\\bcut (?:the |that |a )?)\\b(?:rail|railing|guard|guardrail)\\b[^.{]{0,30}<LN>|<LN>(?: inch)?(?: high| tall)? (?:railing|guardrail|guard)\\b',
);
const HANDRAIL = saying('\\bhand ?rail\\b[^.{]{0,24}<LN>|<LN>(?: inch)?(?: high)? hand ?rail\\b');
const DROP = saying(
  "\\b(?:deck|porch|landing|balcony|platform|stoop|floor|loft)(?:'s| is| sits)?[^.{]{0,20}<LN> (?:off|above|up|over|from)\\b",
);
const GAP = saying(
  '\\b(?:balusters?|pickets?|spindles?)\\b[^.{]{0,30}<LN> (?:clear|apart|between|gap|gaps|space)|<LN>(?: inch)? (?:gaps?|between|spaces?)[^.{]{0,16}\\b(?:balusters?|pickets?|spindles?)\\b',
);
const ON_STAIR = /\b(?:stairs?|steps|nosings?|treads?)\b/;

export const guards: Reader = (said) => {
  const { words } = said;
  const out: Verdict[] = [];
  const onStair = ON_STAIR.test(words) && !/\b(?:deck|porch|balcony|landing|loft)\b/.test(words);
  const grip = matched(said, HANDRAIL);
  if (grip && grip.compare(20) > 0 && grip.compare(60) < 0)
    out.push(
      ON_STAIR.test(words)
        ? handrailHeight(grip)
        : guardHeight({ drop: matched(said, DROP), height: grip, on: 'floor' }),
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
const RISE = saying(
  `\\b(?:rises?|risers?)\\b[^.{]{0,20}${LIST('run|treads?|wide|deep')}|{[LN](\\d+)} (?:inch )?(?:rise|risers?|high risers)\\b`,
  'g',
);
const TREAD = saying(
  `\\btreads?\\b[^.{]{0,20}${LIST('rise|risers?|high')}|{[LN](\\d+)} (?:inch )?(?:deep )?(?:treads?|run)\\b`,
  'g',
);
const TOTAL = saying('\\btotal rise\\b[^.{]{0,15}<LN>|<LN> (?:of )?total rise\\b');
const STEPS = saying('<N> (?:risers|rises|steps)\\b');
const WIDTH = saying('\\bstairs?\\b[^.{]{0,20}<LN> wide\\b|<LN> wide stairs?\\b');
const HEADROOM = saying('<LN>(?: of)? head ?room\\b|\\bhead ?room\\b[^.{]{0,14}<LN>');

export const stairs: Reader = (said) => {
  if (!/\b(?:stairs?|steps?|risers?|treads?|stringers?)\b/.test(said.words)) return [];
  const all = (pattern: RegExp) =>
    [...said.words.matchAll(pattern)]
      .flatMap((m) => (m[1] ? [...m[1].matchAll(/\d+(?=\})/g)].map(([id]) => id) : [m[2]!]))
      .flatMap((id) => inchesOf(said.figures[Number(id)]) ?? [])
      .filter((v) => v.compare(3) > 0 && v.compare(16) < 0);
  const total = matched(said, TOTAL);
  const steps = total && STEPS.exec(said.words);
  const reckoned = total && steps ? [total.div(said.figures[Number(steps[1])]!.value)] : [];
  const width = matched(said, WIDTH);
  const headroom = matched(said, HEADROOM);
  return [
    ...risers(reckoned.length ? reckoned : all(RISE)),
    ...treads(all(TREAD)),
    ...(width ? [stairWidth(width)] : []),
    ...(headroom ? [stairHeadroom(headroom)] : []),
  ];
};
