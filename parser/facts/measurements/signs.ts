import type { Quantity } from '../../types.ts';
import { isCopula, isGoods, isNounTerm } from '../chunks.ts';
import { sortOf, wordOf } from '../spans/features.ts';
import { nounPhraseFrom, type Talk } from '../talk.ts';
import { isNegative } from '../words.ts';
import type { Figure } from './figures.ts';
import { isNoun, stemOf, subjectOf, tellingWords } from './telling.ts';
import { topicsIn } from './topics.ts';

/** What is seen of a figure: what tells whether it is a reading at all, and what tells its unit. */
export interface Signs {
  reads: string[];
  unit: string[];
}

/** Upper ends of the sizes that figures are put into, chosen where what is read in one unit gives way to another. */
const SIZES = [
  0.1, 0.6, 1, 2, 3, 5, 8, 12, 16, 20, 26, 32, 40, 50, 60, 72, 85, 100, 115, 130, 160, 200, 260, 400, 600, 1000, 3000,
];

const sizeOf = (value: number) => {
  const k = SIZES.findIndex((end) => value < end);
  return k < 0 ? 'huge' : `<${SIZES[k]}`;
};

/** How a figure is broken up: whole, halves, eighths and finer, with a decimal point. */
function formOf(q: Quantity): string {
  if (/\d[.,]\d|^\.|point/.test(q.quote)) return 'decimal';
  const { d } = q.value;
  return d === 1n ? 'whole' : d <= 2n ? 'half' : d <= 4n ? 'quarter' : 'fine';
}

const METRIC = /^(?:mm|cm|m|C|kPa|sq m|bar|L|kg|micron|mm\/m|L\/s)$/;
const US = /^(?:in|ft|yd|F|psi|sq ft|gal|lb|oz|in\/ft|gpm|cfm|square|in wc)$/;

/** How metric what the note says with a unit is. */
export function systemOf(talk: Talk): string {
  let [metric, us] = [0, 0];
  for (const { unit } of talk.reading.quantities) {
    if (METRIC.test(unit ?? '')) metric++;
    else if (US.test(unit ?? '')) us++;
  }
  return metric && us ? (metric > us ? 'both+' : 'both') : metric ? 'metric' : us ? 'us' : 'none';
}

/** What is seen of a figure; `system` is the note's (`systemOf`). */
export function signsOf(talk: Talk, figure: Figure, system: string): Signs {
  const { frame, from, until, at } = figure;
  const { chunks } = frame;
  const q = figure.sides[0]!;
  const word = (k: number) => (chunks[k] ? wordOf(chunks[k]) : '#');
  const sort = (k: number) => (chunks[k] ? sortOf(chunks[k]) : '#');
  const size = sizeOf(Math.max(...figure.sides.map((s) => s.value.valueOf())));
  const form = formOf(figure.sides.at(-1)!);
  const pair = q.group ? `${q.group.kind}${figure.sides.length}` : 'one';
  const digits = /\d/.test(q.quote) ? 'digits' : 'words';
  const before = talk.frames[at - 1];
  const near = before?.sentence === frame.sentence ? 'on' : 'new';
  const nouns = chunks.slice(0, from).filter(isNoun);
  const lastNoun = nouns.at(-1);
  const earlier = before?.chunks.filter(isNoun) ?? [];
  const noun = lastNoun ? stemOf(lastNoun) : earlier.length ? `^${stemOf(earlier.at(-1)!)}` : '#';
  const nounSort = lastNoun ? sortOf(lastNoun) : '#';
  const end = nounPhraseFrom(chunks, until);
  const head = chunks.slice(until, end).findLast((c) => isNounTerm(c) || c.kind === 'word');
  const headSort = head ? (isGoods(head) ? 'goods' : sortOf(head)) : '#';
  const subject = subjectOf(frame);
  const behind = from > frame.verbAt ? 'behind' : 'ahead';
  const verb = frame.verbAt >= 0 ? `${frame.lemma} ${behind}` : '#';
  const around = [...chunks.slice(0, from), ...chunks.slice(until)];
  const own = tellingWords(around);
  const others = tellingWords(before?.chunks).filter((w) => !own.includes(w));
  const further = tellingWords(talk.frames[at - 2]?.chunks).filter((w) => !own.includes(w) && !others.includes(w));
  const next = tellingWords(talk.frames[at + 1]?.chunks).filter((w) => !own.includes(w));
  const here = topicsIn(around);
  const ahead = topicsIn(before?.chunks ?? []).filter((t) => !here.includes(t));
  const ahead2 = topicsIn(talk.frames[at - 2]?.chunks ?? []).filter((t) => !here.includes(t) && !ahead.includes(t));
  const topics = [
    ...(here.length ? here : ['none']).map((t) => `topic ${t}`),
    ...ahead.map((t) => `topic- ${t}`),
    ...ahead2.map((t) => `topic-- ${t}`),
  ];
  const bound = q.bound ?? (q.onCenter ? 'centers' : q.tolerance ? 'hair' : '');

  const common = [
    'any',
    `size ${size}`,
    `form ${form}`,
    `group ${pair}`,
    `group ${pair} ${form}`,
    `size ${size} ${form}`,
    `digits ${digits} ${form}`,
    `w-1 ${word(from - 1)}`,
    `w+1 ${word(until)}`,
    `w-2 ${word(from - 2)} ${word(from - 1)}`,
    `w+2 ${word(until)} ${word(until + 1)}`,
    `noun ${noun}`,
    `head ${head ? stemOf(head) : '#'}`,
    ...own.map((w) => `own ${w}`),
    `bound ${bound}`,
    `verb ${verb}`,
    ...topics,
    ...topics.map((t) => `${t} ${size}`),
    `topics ${here.join(' ')}`,
    `topics ${here.join(' ')} ${size}`,
  ];
  return {
    reads: [
      ...common,
      `w ${word(from - 1)} ${word(until)}`,
      `s-1 ${sort(from - 1)}`,
      `s+1 ${sort(until)}`,
      `s-2 ${sort(from - 2)} ${sort(from - 1)}`,
      `s+2 ${sort(until)} ${sort(until + 1)}`,
      `s ${sort(from - 1)} ${sort(until)}`,
      `ws ${word(from - 1)} ${sort(until)}`,
      `sw ${sort(from - 1)} ${word(until)}`,
      `headsort ${headSort}`,
      `headsort ${headSort} ${form}`,
      `headsort ${headSort} ${pair}`,
      `nounsort ${nounSort}`,
      `subject ${subject}`,
      `subject ${subject} ${verb}`,
      `subject ${subject} ${word(from - 1)}`,
      `says ${frame.predicate} ${behind}`,
      `says ${frame.predicate} ${behind} ${form}`,
      `says ${frame.predicate} ${subject} ${form}`,
      `use ${frame.use} ${form}`,
      `verb ${verb} ${form}`,
      `verb ${verb} ${word(from - 1)}`,
      `w-1 ${word(from - 1)} ${form}`,
      `w+1 ${word(until)} ${form}`,
      `s+1 ${sort(until)} ${form}`,
      `s+1 ${sort(until)} ${size}`,
      `end ${until === chunks.length} ${form}`,
      `end ${until === chunks.length} ${word(from - 1)}`,
      `begin ${from === 0} ${form}`,
      `open ${frame.openers.at(-1) ?? ''}`,
      `if ${chunks.slice(0, 2).some((c) => c.word === 'if') || frame.openers.includes('if')}`,
      `not ${chunks.slice(0, from).some((c) => isNegative(c.word))}`,
      `is ${isCopula(chunks[from - 1])} ${form} ${subject}`,
      `clause ${until - from === chunks.length}`,
      ...others.map((w) => `prev ${w}`),
    ],
    unit: [
      ...common,
      `system ${system}`,
      ...topics.map((t) => `${t} ${system}`),
      ...topics.map((t) => `${t} ${form}`),
      `system ${system} ${size}`,
      `system ${system} ${form}`,
      `system ${system} ${pair}`,
      `size ${size} ${pair}`,
      `noun ${noun} ${system}`,
      ...(lastNoun ? [`nounsort ${nounSort} ${size}`, `nounsort ${nounSort} ${system} ${pair}`] : []),
      ...others.map((w) => `prev ${w} ${near}`),
      ...others.map((w) => `prev ${w}`),
      ...further.map((w) => `prev2 ${w}`),
      ...next.map((w) => `next ${w}`),
      ...own.map((w) => `own ${w} ${size}`),
      ...own.map((w) => `own ${w} ${system}`),
    ],
  };
}
