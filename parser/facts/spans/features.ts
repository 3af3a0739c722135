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
    );
    out.push(...clauseFeatures(chunk, frames, clauses[t]!));
    out.push(...ruleFeatures(told[t]!, chunks[t - 1], frames[clauses[t]!]));
    return out;
  });
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
export function clauseAt(chunks: readonly Chunk[], frames: readonly Frame[]): number[] {
  let k = 0;
  return chunks.map((c) => {
    while (k < frames.length && frames[k]!.until <= c.from) k++;
    const frame = frames[k];
    return frame && frame.from <= c.from ? k : -1;
  });
}

export function clauseFeatures(chunk: Chunk, frames: readonly Frame[], k: number): string[] {
  const frame = frames[k];
  if (!frame) return ['noclause'];
  const verb = frame.chunks[frame.verbAt];
  const place =
    chunk.from <= frame.from ? 'B' : !verb || chunk.from > verb.from ? 'R' : chunk.from === verb.from ? 'V' : 'S';
  const p = frame.predicate;
  const flawed = frame.chunks.some((c) => c.term?.kind === 'defect');
  const dated = frame.chunks.some((c) => c.time);
  return [
    `fp=${p}|${place}`,
    `fP=${p}${frame.negative ? '-' : ''}${flawed ? 'd' : ''}|${place}`,
    `fu=${p}|${frame.use}|${place}`,
    `fl=${p}|${frame.lemma}`,
    `fo=${frame.openers.at(-1) ?? ''}|${p}`,
    `fj=${frame.joinedBy}|${place}`,
    `ft=${p}|${dated}|${place}`,
    `fn=${Math.min(frame.chunks.length, 6)}|${p}`,
    `pp=${frames[k - 1]?.predicate ?? '#'}|${p}|${frame.joinedBy}|${place}`,
    `np=${frames[k + 1]?.predicate ?? '#'}|${p}|${frames[k + 1]?.joinedBy ?? ''}|${place}`,
  ];
}

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
