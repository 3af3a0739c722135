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
import { claimsIn } from '../../parser/quantities/others/index.ts';
import { isBare, isWeighed } from '../../parser/quantities/weighing/index.ts';
import { signsOf } from '../../parser/quantities/weighing/signs.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { readFiles } from '../score/lib/corpus.ts';
import { dice, shuffled } from './common.ts';
import { type Example, learnYes } from './logistic.ts';


const OPENED = ['seen', 'fresh', 'opened', ...[2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((n) => `opened-${n}`), 'talk'];
const FOLDS = 6;
/** A phrase was written for its numbers; of a note's numbers many are left unmarked. */
const WORTH_OF_PHRASE = 2;
/** Weights smaller than this are left out of the table. */
const SMALL = 0.15;
const HOW = { rounds: 6, decay: 0.001, pull: 1, seenAtLeast: 3 };

interface Marked {
  start: number;
  end: number;
  /** Null where the answer is only that a while is told. */
  value: number | null;
}

interface Row extends Example {
  file: string;
  /** A rule has it already, so that nobody will ask. */
  claimed: boolean;
}

/** The bare numbers of a text, each with whether it counts; those that nobody knows are left out. */
function rowsOf(text: string, marked: readonly Marked[], all: boolean, file: string): Row[] {
  const { tokens } = hear(text, builtIn());
  const claims = claimsIn(new Line(tokens));
  const line = new Line(tokens);
  const drafts = unclaimedDrafts(line, tokens);
  const claimOf = (d: { from: number; until: number }) => claims.find((c) => c.from < d.until && c.until > d.from);
  const free = drafts.filter((d) => !claimOf(d));
  const bare = free.filter(isBare).length;
  return drafts.filter(isWeighed).flatMap((draft) => {
    const [start, end] = [line.tokens[draft.from]!.start, line.tokens[draft.until - 1]!.end];
    const value = draft.n / draft.d;
    const isOf = (m: Marked) =>
      m.value === null ? draft.unit?.kind === 'time' : Math.abs(m.value - value) < 1e-6;
    const yes = marked.some((m) => m.start < end && m.end > start && isOf(m));
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

const place = (text: string, quote: string, value: number | null, start = text.indexOf(quote)): Marked => ({
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
      // "Let it cure three days, then grout": what must be waited for.
      ...gold.followUps.flatMap((f) => (f.notBefore ? [place(text, f.quote, null)] : [])),
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


const HELD = ['e','g','h'];
const heldRows = HELD.flatMap((name) => readFileSync(`/tmp/hQ7-w/${name}.jsonl`, 'utf8').trim().split('\n').flatMap((row) => { const { text, gold } = JSON.parse(row) as Phrase; return rowsOf(text, gold.map((g) => place(text, g.quote, g.value, g.start)), true, name); })).filter(r=>!r.claimed);
console.log('held', heldRows.filter(r=>r.yes).length, heldRows.filter(r=>!r.yes).length);
const base = { rounds: 6, decay: 0.001, pull: 1, seenAtLeast: 3 };
const variants: any[] = JSON.parse(process.argv[2] ?? '[{}]');
for (const v of variants) {
  const { drop, worth: w = 2, worthTalk, ...how } = v;
  const re = drop && new RegExp(drop);
  const f = (r: Row) => re ? { ...r, features: r.features.filter((x) => !re.test(x)) } : r;
  const worth = ({ file }: Row) => (file.endsWith('.jsonl') ? 1 : file.startsWith('talk') ? (worthTalk ?? w) : w);
  const weighed = rows.flatMap((row) => Array.from({ length: worth(row) }, () => f(row)));
  const weights = learnYes(shuffled(weighed, dice(7)), { ...base, ...how });
  const s = heldRows.map((r) => ({ yes: r.yes, s: sum(f(r), weights) }));
  const ys = s.filter((x) => x.yes).map((x) => x.s).sort((a, b) => a - b);
  const ns = s.filter((x) => !x.yes).map((x) => x.s);
  const auc = ys.reduce((t, y) => t + ns.filter((n) => n < y).length, 0) / (ys.length * ns.length);
  console.log(JSON.stringify(v), 'AUC', auc.toFixed(4), [2, 4, 6, 8].map((k) => `${k} lost:${ns.filter((n) => n < ys[k]!).length} (at ${ys[k]!.toFixed(2)})`).join('  '));
}
