/**
 * `npx tsx tests/learn/names.ts [--judge]`: learns from the annotated notes which of the possible names of a span its
 * answer gives, and writes `parser/facts/spans/namesTable.ts`. With `--judge` it writes nothing, but learns from four
 * fifths of the notes at a time and judges on the last.
 */
import { factsByRule } from '../../parser/facts/index.ts';
import { cutAround, shared } from '../../parser/facts/spans/cut.ts';
import { KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { possibleNames } from '../../parser/facts/spans/possible.ts';
import type { Fact } from '../../parser/index.ts';
import { contentWords } from '../score/lib/wording.ts';
import { type Choice, choose, learn } from './choice.ts';
import { answersOf, type Laid, laidOpen } from './corpus.ts';
import { linesOf, writeTable } from './table.ts';

/** Weights under this are left out of the table. */
const LEAST = 0.12;
const SETTINGS = { epochs: 12, rate: 0.2, shrink: 0.02, atLeast: 10 };
const FOLDS = 5;

/** A place, with how each of its possible names would be judged. */
interface Example extends Choice {
  fits: readonly ReturnType<typeof fit>[];
}

/** The places of one kind in a note, each with its possible names and what they are worth. */
function examplesOf({ note, talk, tuned }: Laid, n: number, kind: SpanKind): Example[] {
  const answers = answersOf(note, kind);
  const cut = cutAround(talk, answers);
  const told = factsByRule(cut);
  const own: Fact[] = kind === 'problem' ? told.problems : kind === 'done' ? told.done : told.followUps;
  const others: Fact[] =
    kind === 'problem'
      ? [...told.goods]
      : kind === 'done'
        ? [...told.goods, ...told.problems]
        : [...told.goods, ...told.problems, ...told.done];
  return answers.map((answer) => {
    const fact = own.filter((f) => shared(f, answer) >= 0.5).sort((a, b) => shared(b, answer) - shared(a, answer))[0];
    const name = fact?.kind === 'problem' ? fact.thing : fact && 'task' in fact ? fact.task : '';
    const possible = possibleNames(cut, answer, kind, { name, rule: fact?.rule ?? '' }, others);
    const fits = possible.map(({ words }) => fit(words, answer.name, answer.quote));
    return {
      note: n,
      fits,
      answers: possible.map(({ parts }, i) => ({
        // Where rules were fitted to a note, their word is kept apart, so that no weight learns to trust them too far.
        signs: parts.flat().map((s) => one(tuned && s.startsWith('rule') ? `fitted ${s}` : s)),
        worth: fits[i]!.worth,
      })),
    };
  });
}

const ones = new Map<string, string>();
/** The same string for the same sign, so that millions of them fit. */
function one(sign: string): string {
  const known = ones.get(sign);
  if (known === undefined) ones.set(sign, sign);
  return known ?? sign;
}

const contents = new Map<string, ReadonlySet<string>>();
function wordsOf(text: string): ReadonlySet<string> {
  const known = contents.get(text) ?? contentWords(text);
  contents.set(text, known);
  return known;
}
const part = (wanted: ReadonlySet<string>, ...given: ReadonlySet<string>[]) =>
  wanted.size ? [...wanted].filter((w) => given.some((g) => g.has(w))).length / wanted.size : 1;

/** A name is found where half of the wanted words are in it or its quote; it is right where it holds half by itself, and little else. */
function fit(name: string, wanted: string, quote: string) {
  const [own, want, around] = [wordsOf(name), wordsOf(wanted), wordsOf(quote)];
  const found = part(want, own, around) >= 0.5;
  const holds = part(want, own);
  const about = part(own, want, around) >= 0.5;
  const only = part(own, want);
  const even = holds + only > 0 && own.size ? (2 * holds * only) / (holds + only) : 0;
  const named = holds >= 0.5 && about && own.size > 0;
  const worth = own.size ? ((found ? 0.25 : 0) + (named ? 0.3 : 0) + 0.45 * even) ** 2 : 0;
  return { found, named, worth };
}

const laid = await laidOpen();
const columns: ReadonlyMap<string, number>[] = [];
for (const kind of KINDS) {
  const all = laid.flatMap((l, n) => examplesOf(l, n, kind));
  if (process.argv.includes('--judge')) judge(kind, all);
  else columns.push(learn(all, SETTINGS));
}
if (!process.argv.includes('--judge'))
  writeTable(
    'spans/namesTable.ts',
    'NAMES',
    'Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work.',
    linesOf(columns, LEAST).filter((line) => !line.startsWith('fitted ')),
  );

function judge(kind: SpanKind, all: readonly Example[]): void {
  const t = { found: 0, named: 0, can: 0, names: 0 };
  for (let k = 0; k < FOLDS; k++) {
    const learned = learn(
      all.filter((e) => e.note % FOLDS !== k),
      SETTINGS,
    );
    const weights = new Map([...learned].filter(([, w]) => Math.abs(w) >= LEAST));
    for (const e of all.filter((x) => x.note % FOLDS === k)) {
      const i = choose(e, weights);
      t.names += e.answers.length;
      if (e.fits.some((f) => f.named)) t.can++;
      const f = e.fits[i];
      if (f?.found) t.found++;
      if (f?.named) t.named++;
    }
  }
  const of = (n: number) => (n / all.length).toFixed(3);
  console.log(
    `${kind}: ${all.length} places, ${of(t.names)} names each, possible ${of(t.can)}, found ${of(t.found)}, named ${of(t.named)}`,
  );
}
