import type { Draft } from '../draft.ts';
import type { Line } from '../line.ts';
import { unitNamed } from '../units.ts';
import { ONES, PARTS, PLURALS, TENS } from '../words.ts';
import { crewSigns, knownAs } from './crewTalk.ts';
import { topicsOf } from './topics.ts';

const isNumberWord = (word: string) =>
  ONES.has(word) ||
  TENS.has(word) ||
  PARTS.has(word) ||
  PLURALS.has(word) ||
  /^(?:oh|hundred|thousand|dozen)$/.test(word);

/** What kind of word stands at a place, for words too rare to weigh by themselves. */
function kindOf(line: Line, at: number): string {
  const token = line.tokens[at];
  if (!token) return '#';
  if (token.kind === 'break') return '/';
  if (token.kind === 'mark') return token.text;
  if (token.kind === 'number') return '1';
  const { word } = token;
  if (isNumberWord(word)) return 'one';
  if (unitNamed(word)) return 'unit';
  if (word.length === 1) return 'letter';
  if (word.endsWith("'s")) return "'s";
  if (word.endsWith("n't")) return "n't";
  if (/[^sui']s$/.test(word) && word.length > 3) return '-s';
  if (/ing$/.test(word) && word.length > 5) return '-ing';
  if (/ed$/.test(word) && word.length > 4) return '-ed';
  if (/ly$/.test(word) && word.length > 4) return '-ly';
  return /^[A-Z][a-z]/.test(token.text) && line.tokens[at - 1]?.kind === 'word' ? 'Name' : 'word';
}

const RANGES: readonly [number, string][] = [
  [0, '0'],
  [1, '1'],
  [2, '2'],
  [5, '5'],
  [12, '12'],
  [20, '20'],
  [60, '60'],
  [99, '99'],
  [999, '999'],
  [9999, '9999'],
];

const sizeOf = ({ n, d }: Draft) => RANGES.find(([most]) => n <= most * d)?.[1] ?? 'more';

/** How it was said: in figures or words; figure by figure, with a hundred swallowed, round. */
function formOf(line: Line, draft: Draft): string {
  if (draft.d > 1) return 'parts';
  const token = line.tokens[draft.from]!;
  if (token.kind === 'number')
    return `${token.text.startsWith('0') && draft.n > 0 ? '0' : ''}figures ${token.text.length}`;
  let spoken = 'words';
  for (let k = draft.from; k < draft.until; k++) if (/^(?:oh|o)$/.test(line.word(k))) spoken = 'oh';
  if (
    spoken === 'words' &&
    draft.n > 99 &&
    !line.word(draft.until - 1).endsWith('hundred') &&
    !saysHundred(line, draft)
  )
    spoken = 'swallowed';
  return `${spoken}${draft.n % 10 === 0 ? ' round' : ''}`;
}

const saysHundred = (line: Line, { from, until }: Draft) => {
  for (let k = from; k < until; k++) if (/^(?:hundred|thousand|dozen)$/.test(line.word(k))) return true;
  return false;
};

const ENDS = /^[.;!?]$/;
const WINDOW = 6;

/** The words of the same sentence before a number (-1) or behind it (1), nearest first. */
function* around(line: Line, at: number, step: -1 | 1): Generator<string> {
  for (let k = at, left = WINDOW; left > 0; k += step, left--) {
    const token = line.tokens[k];
    if (!token || token.kind === 'break' || ENDS.test(token.text)) return;
    if (token.kind === 'word') yield token.word;
  }
}

const JOINS =
  /^(?:a|an|the|of|in|on|at|to|for|from|by|with|and|or|but|so|is|are|was|were|it|he|she|they|we|i|you|that|this)$/;
const FURTHEST_HEAD = 4;

/** "Old work boxes", "spare poles": how many words on the plural stands that the number would count. */
function headOf(line: Line, until: number): string {
  for (let k = 0; k < FURTHEST_HEAD; k++) {
    const token = line.tokens[until + k];
    if (token?.kind !== 'word' || JOINS.test(token.word)) return 'none';
    if (kindOf(line, until + k) === '-s') return String(k);
  }
  return 'none';
}

/** What the number would count, and what stands on its other side, by how they are known. */
function* countedSigns(line: Line, from: number, until: number): Generator<string> {
  const next = knownAs(line, until);
  yield `counted next ${next}`;
  yield `behind ${knownAs(line, from - 1)} ${next}`;
  const head = headOf(line, until);
  if (head !== 'none') yield `counted head ${knownAs(line, until + Number(head))}`;
}

/** What the talk around a number is of: "batting two eighty" and "a deductible of five hundred" count nothing. */
function* topicSigns(line: Line, from: number, until: number): Generator<string> {
  const near = new Set<string>();
  for (let k = Math.max(0, from - TOPIC_REACH); k < until + TOPIC_REACH && k < line.tokens.length; k++)
    if (k < from || k >= until) for (const topic of topicsOf(line.word(k))) near.add(topic);
  for (const topic of near) yield `of ${topic}`;
  yield `of so many ${Math.min(near.size, 3)}`;
  for (const topic of topicsOf(line.word(from - 1))) yield `l of ${topic}`;
  for (const topic of topicsOf(line.word(from - 2))) yield `l2 of ${topic}`;
  for (const topic of topicsOf(line.word(until))) yield `r of ${topic}`;
}

const TOPIC_REACH = 10;

/** A remark of one line holds a number that counts nothing more often than a long note does. */
const LENGTHS = [6, 10, 16, 30];

/** What else was read of the same words. */
export interface Said {
  units: number;
  claims: number;
  bare: number;
}

/** Everything about a bare number and its neighbours that may tell whether it counts or measures anything. */
export function signsOf(line: Line, draft: Draft, said: Said): string[] {
  const { from, until } = draft;
  const size = sizeOf(draft);
  const form = formOf(line, draft);
  const left = kindOf(line, from - 1);
  const out = [
    'any',
    `long ${LENGTHS.find((most) => line.tokens.length <= most)}`,
    `unit ${draft.unit?.kind ?? ''}`,
    `size ${size}`,
    `form ${form}`,
    `${size} ${form}`,
  ];
  const rule = draft.rule === 'quantity/whole' ? (draft.group?.kind ?? '') : draft.rule;
  out.push(`rule ${rule}`);
  for (const [name, at, step] of [
    ['l', from, -1],
    ['r', until - 1, 1],
  ] as const)
    for (const d of [1, 2, 3]) {
      const word = line.word(at + d * step);
      const kind = kindOf(line, at + d * step);
      out.push(`${name}${d} ${word}`, `${name}${d}. ${kind}`);
      if (d === 1) out.push(`${size} ${name} ${word}`, `${size} ${name}. ${kind}`);
    }
  out.push(`head ${headOf(line, until)}`, `${left} head ${headOf(line, until)}`);
  for (const word of around(line, from - 1, -1)) out.push(`b ${word}`);
  for (const word of around(line, until, 1)) out.push(`a ${word}`);
  out.push(...topicSigns(line, from, until), ...crewSigns(line, from, until), ...countedSigns(line, from, until));
  out.push(`units ${Math.min(said.units, 2)}`, `claims ${Math.min(said.claims, 2)}`, `bare ${Math.min(said.bare, 3)}`);
  return out;
}
