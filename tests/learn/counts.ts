/**
 * `npx tsx tests/learn/counts.ts`: learns what tells a number that counts or measures from one that does neither
 * (`parser/quantities/weighing`) and writes the table of weights. Examples are the bare numbers of phrases that have
 * been opened, by their answers; and of annotated notes, where an answer holds the number (yes) or a rule claims it (no).
 * With `--check` it writes nothing: it learns from five sixths of the files at a time and counts how the last sixth is told.
 */
import { readFileSync } from 'node:fs';
import { hear } from '../../parser/hearing/index.ts';
import { unclaimedDrafts } from '../../parser/quantities/index.ts';
import { Line } from '../../parser/quantities/line.ts';
import { numberAt } from '../../parser/quantities/numbers.ts';
import { claimsIn } from '../../parser/quantities/others/index.ts';
import { isBare, isWeighed } from '../../parser/quantities/weighing/index.ts';
import { signsOf } from '../../parser/quantities/weighing/signs.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { readFiles } from '../score/lib/corpus.ts';
import { dice, shuffled } from './common.ts';
import { type Example, learnYes } from './logistic.ts';
import { linesOf, writeTable } from './table.ts';

const OPENED = [
  'seen',
  'fresh',
  'opened',
  ...[2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18].map((n) => `opened-${n}`),
  'talk',
];
const FOLDS = 6;
/** A phrase was written for its numbers; of a note's numbers many are left unmarked. */
const WORTH_OF_PHRASE = 4;
/** Weights smaller than this are left out of the table. */
const SMALL = 0.15;
const HOW = { rounds: 6, decay: 0.001, pull: 2, seenAtLeast: 3 };

interface Marked {
  start: number;
  end: number;
  value: number;
}

interface Row extends Example {
  file: string;
  /** A rule has it already, so that nobody will ask. */
  claimed: boolean;
}

/** The bare numbers of a text, each with whether it counts; those that nobody knows are left out. */
function rowsOf(text: string, marked: readonly Marked[], all: boolean, file: string): Row[] {
  const { tokens } = hear(text, builtIn());
  const claims = claimsIn(new Line(tokens, numberAt), []);
  const line = new Line(tokens, numberAt);
  const drafts = unclaimedDrafts(line, tokens);
  const claimOf = (d: { from: number; until: number }) => claims.find((c) => c.from < d.until && c.until > d.from);
  const free = drafts.filter((d) => !claimOf(d));
  const bare = free.filter(isBare).length;
  return drafts.filter(isWeighed).flatMap((draft) => {
    const [start, end] = [line.tokens[draft.from]!.start, line.tokens[draft.until - 1]!.end];
    const value = draft.n / draft.d;
    const yes = marked.some((m) => m.start < end && m.end > start && Math.abs(m.value - value) < 1e-6);
    const claimed = claimOf(draft) !== undefined;
    if (!yes && !all && !claimed) return [];
    const said = {
      units: free.length - bare,
      claims: claims.length - (claimed ? 1 : 0),
      bare: bare + (claimed ? 1 : 0),
    };
    return [{ features: signsOf(line, draft, said), yes: yes && (all || !claimed), file, claimed }];
  });
}

const place = (text: string, quote: string, value: number, start = text.indexOf(quote)): Marked => ({
  start,
  end: start + quote.length,
  value,
});

interface Phrase {
  text: string;
  gold: { value: number; quote: string; start?: number }[];
}

const phrases = OPENED.flatMap((name) =>
  readFileSync(new URL(`../../fixtures/phrases/${name}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .flatMap((row, at) => {
      const { text, gold } = JSON.parse(row) as Phrase;
      const marked = gold.map((g) => place(text, g.quote, g.value, g.start));
      return rowsOf(text, marked, true, name === 'talk' ? `talk${at % 5}` : name);
    }),
);
const notes = readFiles('seen').flatMap((from) =>
  from.notes.flatMap(({ text, gold }) => {
    const marked = [
      ...gold.measurements.map((m) => place(text, m.quote, m.value)),
      ...gold.materials.flatMap((m) => (m.quantity === null ? [] : [place(text, m.quote, m.quantity)])),
    ];
    return rowsOf(text, marked, false, from.file);
  }),
);
const rows = [...notes, ...phrases];

const learn = (from: readonly Row[]) => {
  const worth = ({ file }: Row) => (file.endsWith('.jsonl') ? 1 : WORTH_OF_PHRASE);
  const weighed = from.flatMap((row) => Array.from({ length: worth(row) }, () => row));
  return learnYes(shuffled(weighed, dice(7)), HOW);
};
const sum = (row: Row, weights: ReadonlyMap<string, number>) =>
  row.features.reduce((s, f) => s + (weights.get(f) ?? 0), 0);

if (process.argv.includes('--check')) {
  const files = [...new Set(rows.map(({ file }) => file))];
  const told = Array.from({ length: FOLDS }, (_, fold) => {
    const held = (row: Row) => files.indexOf(row.file) % FOLDS === fold;
    const weights = learn(rows.filter((row) => !held(row)));
    return rows.filter(held).map((row) => ({ row, sum: sum(row, weights) }));
  }).flat();
  const isPhrase = ({ file }: Row) => !file.endsWith('.jsonl');
  for (const [name, of] of [
    ['phrases, no rule claims it', (row: Row) => isPhrase(row) && !row.claimed],
    ['notes', (row: Row) => !isPhrase(row)],
  ] as const) {
    const own = told.filter(({ row }) => of(row));
    const under = (yes: boolean, least: number) => own.filter((t) => t.row.yes === yes && t.sum < least).length;
    const all = (yes: boolean) => own.filter(({ row }) => row.yes === yes).length;
    console.log(`${name}: ${all(true)} count, ${all(false)} do not`);
    for (const least of [-3, -2.2, -1.7, -1.2, -0.5])
      console.log(`  under ${least}: ${under(true, least)} and ${under(false, least)}`);
  }
} else {
  writeTable(
    'parser/quantities/weighing/table.ts',
    'COUNTING',
    'Written by tests/learn/counts.ts: something seen of a bare number, and hundredths for its counting or measuring.',
    linesOf([learn(rows)], SMALL),
  );
}
