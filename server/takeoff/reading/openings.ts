import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { feet, metricUnit } from './lengths.ts';
import { type Figure, figureAt, figureIds, type Said, saying, sentencesOf } from './said.ts';
import { type Extent, SIDE } from './shapes.ts';

const OPENING =
  'door|doors|doorway|doorways|window|windows|opening|openings|slider|sliders|hatch|hatchway|chimney|vanity|shower|fireplace|patio door|garage door|archway|arch|skylight|skylights|vent|hole|island|cabinets?|hearth|tub|closet opening|cased opening';

/** "Door 0.9 comes off", "so take those off". */
const COME_OFF =
  /\bcomes? (?:off|out)\b|\b(?:take|knock|pull|deduct|subtract)\b (?:both |all )?(?:of )?(?:those|them|that|it|these|both)\b/;

export function openingsIn(said: Said, used: Set<number>, out: Extent): void {
  const { words } = said;
  if (
    /\b(?:don't|do not|not|no need to) (?:tak(?:e|ing)\b|deduct|subtract|count|bother)[a-z ]* (?:out|off|openings|doors|windows|them)\b|\b(?:take|knock) nothing (?:off|out)\b/.test(
      words,
    )
  ) {
    for (const m of words.matchAll(saying(`\\b(?:${OPENING})(?: (?:is|are|at|each))* <LN>(?: ?(?:x|by) ?<LN>)?`, 'g')))
      for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
    return;
  }
  const take = (count: string | undefined, a: string | undefined, b: string | undefined, quote: string) => {
    if (used.has(Number(a)) || (b && used.has(Number(b)))) return;
    const first = figureAt(said, a);
    const second = b ? figureAt(said, b) : null;
    const width = feet(said, first, second);
    const height = second ? feet(said, second, first) : null;
    if (!width || (second && !height)) return;
    const times = count ? figureAt(said, count).value.valueOf() : 1;
    out.openings.push({ width, height, count: times, door: /door|arch|slider/.test(quote) });
    for (const id of [count, a, b]) if (id) used.add(Number(id));
  };
  const named = new RegExp(`\\b(?:${OPENING})\\b`);
  // "Windows: three at 3x5".
  for (const m of words.matchAll(
    saying(`\\b(?:${OPENING})(?::|,| are| is)* <N> (?:at|of) <LN>${SIDE} ?(?:x|by) ?<LN>`, 'g'),
  ))
    take(m[1], m[2], m[3], m[0]);
  // "All nine windows are in. They're every one of them three by five".
  const eachOne = saying(
    `<N> (?:[a-z]+ ){0,2}(?:${OPENING})\\b[^{]{0,120}\\b(?:every (?:last )?one(?: of (?:them|those|these))?|each(?: one)?(?: of (?:them|those|these))?|(?:they're|they are|all of them are|all)(?: all)?)(?: (?:is|are|at|about|measures?))* <LN>${SIDE} ?(?:x|by) ?<LN>`,
  ).exec(words);
  if (eachOne) take(eachOne[1], eachOne[2], eachOne[3], eachOne[0]);
  for (const m of words.matchAll(
    saying(
      `(?:<N> )?(?:(?!less|minus|take|for|out|by|the)[a-z]+ ){0,2}(?:${OPENING})(?: (?:is|are|at|of|each|that's|that are|being|'s|measuring|all|{N\\d+}|one)|,|:)* <LN>${SIDE} ?(?:x|by) ?<LN>`,
      'g',
    ),
  ))
    if (
      !/\b(?:by|near|behind|at|outside|beside|from|to) the [a-z ]*$/.test(words.slice(0, m.index + m[0].indexOf('{')))
    )
      take(m[1], m[2], m[3], m[0]);
  for (const m of words.matchAll(
    saying(
      `(?:<N> )?<LN>${SIDE} ?(?:x|by) ?<LN>(?: (?!less|minus|take|for|out|by|and|with|the)[a-z]+){0,2}? (?:${OPENING})\\b`,
      'g',
    ),
  ))
    take(m[1], m[2], m[3], m[0]);
  for (const m of words.matchAll(
    saying(
      `(?:less|minus|take (?:off|out)|deduct|subtract|knock off|not counting|except(?: for)?|skip)[^.;]{0,30}?<A>(?! for (?:the |an? )?(?:door|window|opening)s? in each)`,
      'g',
    ),
  )) {
    const area = convert(figureAt(said, m[1]).value, figureAt(said, m[1]).unit!, 'sq ft');
    if (area && !used.has(Number(m[1]))) out.lessArea = out.lessArea.add(area);
    used.add(Number(m[1]));
  }
  for (const m of words.matchAll(
    saying(
      `(?:<N> )?(?:[a-z]+ )?(?:${OPENING})(?: (?:is|are|at|of|come to|total|totaling|each|that's))* <A>( each)?`,
      'g',
    ),
  )) {
    if (used.has(Number(m[2]))) continue;
    const area = convert(figureAt(said, m[2]).value, figureAt(said, m[2]).unit!, 'sq ft');
    const each = m[1] && !/come to|total/.test(m[0]) ? figureAt(said, m[1]).value : new Fraction(1);
    if (area) out.lessArea = out.lessArea.add(area.mul(each));
    for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
  }
  // "The hearth is 1.5 x 0.6 so knock that off": whatever it is, right behind its size.
  for (const m of words.matchAll(
    saying(
      '<LN>(?: (?:foot|feet|ft))? ?(?:x|by) ?<LN>[^.;{]{0,28}\\b(?:(?:take|knock|leave|leaving) (?:that|it|this) (?:off|out|alone)|(?:we|i) (?:leave|skip)|not (?:getting|covered|included))\\b',
      'g',
    ),
  ))
    take(undefined, m[1], m[2], m[0]);
  // "Door 0.9 and french doors 1.8 come off": widths, for runs.
  for (const sentence of sentencesOf(words).filter((s) => COME_OFF.test(s)))
    for (const m of sentence.matchAll(
      saying(
        `(?:<N> )?(?:[a-z]+ )?(?:${OPENING})(?: on (?:\\{N\\d+\\}|one|the|each|either) [a-z]+)?(?:,? (?:is|are|at|of|each|one|in|there|that's|they're|about|both))* <LN>(?! ?(?:x|by))`,
        'g',
      ),
    ))
      take(m[1], m[2], undefined, m[0]);
  // "Take the window, it dips into the tile 3 feet wide by 6 inches".
  for (const m of words.matchAll(
    saying(
      `\\b(?:less|minus|take|deduct|subtract|knock off|skip)(?: out| off)? (?:the |an? |that )?(?:${OPENING})\\b[^.;{]{0,40}?<LN>${SIDE} ?(?:x|by) ?<LN>`,
      'g',
    ),
  ))
    take(undefined, m[1], m[2], m[0]);
  // "Minus the patio which is 12 by 14 and the shed, 8 by 10": all that follows comes off.
  for (const less of words.matchAll(/\b(?:less|minus|not counting|except(?: for)?) (?:the|a|an|that) [^.;]*/g))
    for (const m of less[0].matchAll(
      saying(
        `\\b(?:the|an?|that) (?:[a-z]+ ){0,2}[a-z]+,?(?: (?:which|that|it)(?:'s| is)?)?(?: (?:is|at|of|an?))* <LN>(?: (?:foot|feet|ft))? ?(?:x|by) ?<LN>(?! ?(?:tiles?|sheets?|boards?|pavers?|subway|porcelain))`,
        'g',
      ),
    ))
      take(undefined, m[1], m[2], m[0]);
  // "Less the driveway at ten by thirty": any piece of the place that was said to come off.
  for (const m of words.matchAll(
    saying(
      '\\b(?:less|minus|take (?:off|out)|deduct|subtract|not counting|except(?: for)?) (?:the |a |an |that )?(?:[a-z]+ ){1,2}(?:at |of |is |which is )?<LN>(?: (?:foot|feet|ft))? ?(?:x|by) ?<LN>',
      'g',
    ),
  ))
    take(undefined, m[1], m[2], m[0]);
  // "Take off 20 for the door and 15 for each window".
  for (const m of words.matchAll(
    saying(
      `<NA>(?: (?:sq ft|feet|square))? (?:for|per|a|an) (?:(the|a|one|each|every|per) )?(?:[a-z]+ )?(door|window|opening)s?\\b`,
      'g',
    ),
  )) {
    const figure = figureAt(said, m[1]);
    // "Take off 1.6 square for the door": square metres, where the place is told in them.
    const bare = metricUnit(said.figures) === 'm' ? 'sq m' : 'sq ft';
    const unit = figure.sure ? figure.unit! : bare;
    if (used.has(Number(m[1])) || figure.value.compare(unit === 'sq m' ? 1 : 4) < 0) continue;
    const counts = [
      ...words.matchAll(
        saying(
          `<N> (?!an? |per |each |for )(?:[a-z]+ )?${m[3]}s?\\b((?:,? (?:and )?[a-z]+ has \\{N\\d+\\}(?=[,.;]|$))*)`,
          'g',
        ),
      ),
    ].flatMap(([, id, rest]) => [Number(id), ...figureIds(rest!)]);
    const each = counts.length > 0 && /each|every|per|\} an? /.test(m[0]);
    const times = each
      ? counts.reduce((sum, id) => sum.add(said.figures[id]!.value), new Fraction(0))
      : new Fraction(1);
    const less = (convert(figure.value, unit, 'sq ft') ?? figure.value).mul(times);
    // "Two doors and one window in each": so many in every room.
    const inEach =
      each &&
      saying(`<N> (?:[a-z]+ )?${m[3]}s?(?: and <N> (?:[a-z]+ )?(?:doors?|windows?|openings?))? in each\\b`).test(words);
    if (/^ in each\b/.test(words.slice(m.index + m[0].length)) || inEach) out.lessEach = out.lessEach.add(less);
    else out.lessArea = out.lessArea.add(less);
    for (const id of [Number(m[1]), ...(each ? counts : [])]) used.add(id);
  }
  for (const m of words.matchAll(
    saying(
      `(?:less|minus|take (?:off|out)|deduct|subtract|knock off|off) (?:<N> )?(?:for |the |a |an |one |that )*(?:[a-z]+ )?(?:${OPENING})(?: (?:at|of|is|are|each))* <LN>(?! ?(?:x|by))`,
      'g',
    ),
  ))
    take(m[1], m[2], undefined, m[0]);
  // "Less two three-foot doors", "minus a 32 inch doorway": width only, for runs.
  for (const m of words.matchAll(
    saying(
      `(?:<N> |\\ba |\\bone |\\bthe )?<LN> (?:wide |foot |cased |closet |entry |bifold |sliding |front |back )*(?:${OPENING})\\b`,
      'g',
    ),
  )) {
    if (
      !/\b(?:less|minus|off|out|deduct|subtract|except|skip|not counting|without|no base|for the)\b/.test(words) ||
      !named.test(m[0]) ||
      countsThem(figureAt(said, m[2]), m[1], m[0])
    )
      continue;
    take(m[1], m[2], undefined, m[0]);
  }
  for (const m of words.matchAll(
    saying('(?:less|minus|take (?:off|out)|deduct|subtract|knock off) (?:about )?<L>(?! ?(?:x|by))', 'g'),
  )) {
    const length = feet(said, figureAt(said, m[1]), null);
    if (length && !used.has(Number(m[1]))) out.lessLength = out.lessLength.add(length);
    used.add(Number(m[1]));
  }
}

/** "Two doors and one window": a bare number that counts them is no width. */
const countsThem = ({ unit, value }: Figure, count: string | undefined, quote: string): boolean =>
  count === undefined &&
  unit === null &&
  value.d === 1n &&
  (value.equals(1) || (/s$/.test(quote) && value.compare(12) <= 0));
