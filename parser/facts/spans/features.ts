import type { Fact } from '../../types.ts';
import { type Chunk, isCopula, isDeterminer, isModal, isPreposition, isSubjectPronoun } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { rangeIn, type Talk } from '../talk.ts';
import { formsOf } from '../verbs.ts';
import { CONJUNCTIONS, HAVES, isNegative, OBJECT_PRONOUNS, SUBORDINATORS } from '../words.ts';

/**
 * What is known at each chunk of a note when it is weighed: the words and sorts of words around it, the clause that it
 * stands in, and which rules have read a fact there.
 *
 * @returns a list of names a chunk (`c0=tfixture`: the chunk names a fixture); the table of weights has a line a name
 */
export function featuresOf(talk: Talk, proposed: readonly Fact[]): string[][] {
  const { chunks, frames } = talk;
  const sorts = chunks.map(sortOf);
  const words = chunks.map(wordOf);
  const near = <T>(list: readonly T[], at: number, edge: T) => list[at] ?? edge;
  const clauses = clauseAt(chunks, frames);
  const told = factsAt(chunks, proposed);
  const listed = chunks.some((c) => c.kind === 'break');
  return chunks.map((chunk, t) => {
    const out: string[] = ['any'];
    for (let d = -2; d <= 2; d++) out.push(`c${d}=${near(sorts, t + d, '#')}`);
    for (let d = -2; d <= 2; d++) out.push(`w${d}=${near(words, t + d, '#')}`);
    for (let d = -1; d <= 1; d++) {
      const lemma = chunks[t + d]?.verb?.lemma;
      if (lemma) out.push(`l${d}=${lemma}`);
    }
    for (let d = -2; d <= 1; d++) out.push(`cc${d}=${near(sorts, t + d, '#')}|${near(sorts, t + d + 1, '#')}`);
    out.push(
      `ww-1=${near(words, t - 1, '#')}|${words[t]}`,
      `ww0=${words[t]}|${near(words, t + 1, '#')}`,
      `wc=${words[t]}|${near(sorts, t + 1, '#')}`,
      `cw=${near(sorts, t - 1, '#')}|${words[t]}`,
      `w-1+1=${near(words, t - 1, '#')}|${near(words, t + 1, '#')}`,
    );
    out.push(
      ...wider(words, 'w', t),
      ...wider(sorts, 'c', t),
      `w-3=${near(words, t - 3, '#')}`,
      `w3=${near(words, t + 3, '#')}`,
    );
    out.push(...clauseFeatures(chunk, frames, clauses[t]!, listed));
    out.push(...ruleFeatures(told[t]!, chunks[t - 1], frames[clauses[t]!]));
    return out;
  });
}

/** Three in a row that a chunk is the last, the middle or the first of. */
function wider(row: readonly string[], name: string, t: number): string[] {
  const at = (d: number) => row[t + d] ?? '#';
  return [
    `${name}${name}${name}-2=${at(-2)}|${at(-1)}|${at(0)}`,
    `${name}${name}${name}-1=${at(-1)}|${at(0)}|${at(1)}`,
    `${name}${name}${name}0=${at(0)}|${at(1)}|${at(2)}`,
  ];
}

/** The kinds of fact whose spans are weighed. */
export const KINDS = ['problem', 'followUp', 'done'] as const;
export type SpanKind = (typeof KINDS)[number];

/** The sort of a chunk: what it counts or names, or its part in the grammar. */
export function sortOf(c: Chunk): string {
  if (c.kind === 'quantity') return `Q${c.quantity!.unitKind ?? '0'}`;
  if (c.kind === 'time') return `T${c.time!.relation}${c.time!.past ? '-' : ''}`;
  if (c.kind === 'number') return `N${c.notQuantity!.kind}`;
  if (c.kind === 'mark') return `M${c.word}`;
  if (c.kind === 'break') return 'BR';
  const verb = c.verb ? `V${c.verb.use}${formsOf(c.verb)}` : '';
  if (c.kind === 'term') return `t${c.term!.kind}${verb}${c.owner ? "'s" : ''}`;
  return verb || smallSort(c);
}

function smallSort(c: Chunk): string {
  if (isCopula(c)) return 'COP';
  if (isModal(c)) return 'MOD';
  if (HAVES.has(c.word)) return 'HAVE';
  if (isNegative(c.word)) return 'NEG';
  if (CONJUNCTIONS.has(c.word)) return 'CONJ';
  if (SUBORDINATORS.has(c.word)) return 'SUB';
  if (isPreposition(c)) return 'PREP';
  if (isSubjectPronoun(c)) return 'PRON';
  if (isDeterminer(c)) return 'DET';
  if (OBJECT_PRONOUNS.has(c.word)) return 'OPR';
  if (c.owner) return "w's";
  return `w${/(?:ly|ing|ed)$/.exec(c.word)?.[0] ?? ''}`;
}

export const wordOf = (c: Chunk): string =>
  c.kind === 'quantity' ? '<q>' : c.kind === 'time' ? '<t>' : c.kind === 'number' ? '<n>' : c.word;

/** For each chunk the clause that it stands in, -1 for what opens or divides clauses. */
export function clauseAt(chunks: readonly Chunk[], frames: readonly Frame[]): readonly number[] {
  const known = clausesAt.get(frames);
  if (known) return known;
  let k = 0;
  const clauses = chunks.map((c) => {
    while (k < frames.length && frames[k]!.until <= c.from) k++;
    const frame = frames[k];
    return frame && frame.from <= c.from ? k : -1;
  });
  clausesAt.set(frames, clauses);
  return clauses;
}
/** Asked anew for every day near every plan of a note. */
const clausesAt = new WeakMap<readonly Frame[], readonly number[]>();

/**
 * What is known of the clause that a chunk stands in. Few features: each counts anew at every chunk of the clause, and
 * with its verb's word and the clauses beside it spans were told from one another worse, not better.
 *
 * @param listed whether the note has line breaks
 */
export function clauseFeatures(chunk: Chunk, frames: readonly Frame[], k: number, listed: boolean): string[] {
  const frame = frames[k];
  if (!frame) return ['noclause'];
  const verb = frame.chunks[frame.verbAt];
  const place =
    chunk.from <= frame.from ? 'B' : !verb || chunk.from > verb.from ? 'R' : chunk.from === verb.from ? 'V' : 'S';
  const p = frame.predicate;
  const flawed = frame.chunks.some((c) => c.term?.kind === 'defect');
  const dated = frame.chunks.some((c) => c.time);
  const goesOn = frame.sentence === frames[k - 1]?.sentence;
  const wentOn = frame.sentence === frames[k + 1]?.sentence;
  return [
    `fp=${p}|${place}`,
    `fP=${p}${frame.negative ? '-' : ''}${flawed ? 'd' : ''}|${place}`,
    `fu=${p}|${frame.use}|${place}`,
    `fo=${frame.openers.at(-1) ?? ''}|${p}`,
    `fj=${frame.joinedBy}|${place}`,
    `ft=${p}|${dated}|${place}`,
    `fq=${quarter(k, frames.length)}|${place}`,
    `fb=${listed}|${place}`,
    `fB=${listed}|${frame.joinedBy}|${p}|${place}`,
    `fs=${goesOn}|${wentOn}|${place}`,
  ];
}

/** Which quarter of the note a clause stands in, its first and last clause by themselves. */
const quarter = (k: number, clauses: number) =>
  k === 0 ? 'first' : k === clauses - 1 ? 'last' : `${Math.floor((4 * k) / clauses)}`;

/** For each chunk the facts whose words it is among. */
function factsAt(chunks: readonly Chunk[], facts: readonly Fact[]): Fact[][] {
  const out: Fact[][] = chunks.map(() => []);
  for (const fact of facts) {
    const [from, until] = rangeIn(chunks, fact);
    for (let t = from; t < until; t++) out[t]!.push(fact);
  }
  return out;
}

/** Which rules have read something here, and whether it begins here. */
function ruleFeatures(here: readonly Fact[], before: Chunk | undefined, frame: Frame | undefined): string[] {
  const out: string[] = [];
  for (const kind of KINDS) if (!here.some((f) => f.kind === kind)) out.push(`r!${kind}`);
  for (const fact of here) {
    const part = !before || before.start < fact.start ? 'B' : 'I';
    out.push(`r=${fact.kind}${part}`, `rr=${fact.rule}${part}`, `rp=${fact.kind}${part}|${frame?.predicate}`);
    if (fact.kind === 'problem') out.push(`rs=${fact.state}${part}`);
    if (fact.kind === 'material') out.push(`rs=${fact.status}${part}`);
  }
  return out;
}
