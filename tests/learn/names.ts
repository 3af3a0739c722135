/**
 * `npx tsx tests/learn/names.ts [--judge]`: learns from the annotated notes which of the possible names of a span its
 * answer gives, and writes `parser/facts/spans/namesTable.ts`. With `--judge` it writes nothing, but learns from four
 * fifths of the files of notes at a time and judges on the last: a file is by one hand.
 */
import { factsByRule } from '../../parser/facts/index.ts';
import { cutAround, shared } from '../../parser/facts/spans/cut.ts';
import { KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { possibleNames } from '../../parser/facts/spans/possible.ts';
import type { Fact } from '../../parser/index.ts';
import { contentWords } from '../score/lib/wording.ts';
import { type Choice, choose, learn, type Settings } from './choice.ts';
import { answersOf, type Laid, laidOpen } from './corpus.ts';
import { linesOf, writeTable } from './table.ts';

/** Weights under this are left out of the table. */
const LEAST = 0.05;
const SETTINGS: Settings = { epochs: 12, rate: 0.1, shrink: 0, pull: 10, start: 5, mean: true, atLeast: 10 };
const FOLDS = 5;

/** A place, with how each of its possible names would be judged. */
interface Example extends Choice {
  kind: SpanKind;
  /** Position of its note's file: each is by one hand. */
  file: number;
  fits: readonly ReturnType<typeof fit>[];
}

/** The places of one kind in a note, each with its possible names and what they are worth. */
function examplesOf({ note, talk, tuned, file }: Laid, n: number, kind: SpanKind): Example[] {
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
      kind,
      file,
      fits,
      answers: possible.map(({ parts }, i) => ({
        signs: parts.flat().flatMap((s) => {
          // Where rules were fitted to a note, their word is kept apart, so that no weight learns to trust them too far.
          const sign = tuned && s.startsWith('rule') ? `fitted ${s}` : s;
          return [one(sign), one(`${kind}: ${sign}`)];
        }),
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
  const worth = own.size ? ((found ? 0.4 : 0) + (named ? 0.4 : 0) + 0.2 * even) ** 2 : 0;
  return { found, named, worth };
}

const all = (await laidOpen()).flatMap((l, n) => KINDS.flatMap((kind) => examplesOf(l, n, kind)));
if (process.argv.includes('--judge')) judge();
else {
  const learned = learn(all, SETTINGS);
  writeTable(
    'parser/facts/spans/namesTable.ts',
    'NAMES',
    'Written by tests/learn/names.ts: a sign of a name, and hundredths for its naming a problem, a plan, finished work.',
    linesOf(
      KINDS.map((kind) => weightsOf(kind, learned)),
      LEAST,
    ).filter((line) => !line.startsWith('fitted ')),
  );
}

/** A sign weighs what it tells of all names, and what it tells besides of those of one kind. */
function weightsOf(kind: SpanKind, learned: ReadonlyMap<string, number>): Map<string, number> {
  const ofOneKind = KINDS.map((k) => `${k}: `);
  return new Map(
    [...learned]
      .filter(([sign]) => !ofOneKind.some((k) => sign.startsWith(k)))
      .map(([sign, weight]) => [sign, weight + (learned.get(`${kind}: ${sign}`) ?? 0)]),
  );
}

function judge(): void {
  const t = KINDS.map(() => ({ places: 0, names: 0, can: 0, found: 0, named: 0 }));
  for (let k = 0; k < FOLDS; k++) {
    const learned = learn(
      all.filter((e) => e.file % FOLDS !== k),
      SETTINGS,
    );
    for (const [n, kind] of KINDS.entries()) {
      const weights = new Map([...weightsOf(kind, learned)].filter(([, w]) => Math.abs(w) >= LEAST));
      for (const e of all.filter((x) => x.kind === kind && x.file % FOLDS === k)) {
        const own = t[n]!;
        const chosen = e.fits[choose(e, weights)];
        own.places++;
        own.names += e.answers.length;
        if (e.fits.some((f) => f.named)) own.can++;
        if (chosen?.found) own.found++;
        if (chosen?.named) own.named++;
      }
    }
  }
  for (const [n, kind] of KINDS.entries()) {
    const { places, names, can, found, named } = t[n]!;
    const of = (count: number) => (count / places).toFixed(3);
    console.log(
      `${kind}: ${places} places, ${of(names)} names each, possible ${of(can)}, found ${of(found)}, named ${of(named)}`,
    );
  }
}
