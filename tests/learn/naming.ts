import type { Frame } from '../../parser/facts/frames.ts';
import { kindOfMeasure } from '../../parser/facts/measurements/kinds.ts';
import type { Place } from '../../parser/facts/naming/features.ts';
import { flawIn, POINTS, pointerIn } from '../../parser/facts/naming/meant.ts';
import { possibleNames, wordsOfName } from '../../parser/facts/naming/rank.ts';
import { USES } from '../../parser/facts/naming/weights.ts';
import { flawsIn } from '../../parser/facts/problems.ts';
import type { Talk } from '../../parser/facts/talk.ts';
import { sameAmount } from '../score/lib/amounts.ts';
import type { Note } from '../score/lib/corpus.ts';
import { contentWords, share } from '../score/lib/wording.ts';
import { type Choice, choose, learn } from './choice.ts';
import { laidOpen } from './corpus.ts';
import { linesOf, writeTable } from './table.ts';

/** Weights under this are left out of the table. */
const LEAST = 0.06;

/**
 * Learns which thing a figure is of and which thing a pointing word means, and writes `parser/facts/naming/table.ts`:
 *
 *     npx tsx tests/learn/naming.ts [--judge]
 *
 * With `--judge` it writes nothing, but learns from seven eighths of the notes at a time and judges on the last.
 */
interface Example extends Choice {
  use: Place['use'];
  /** Share of the answer's words in what was wanted, and of the wanted words in it. */
  fits: readonly boolean[];
}

const examples = (await laidOpen()).flatMap(({ note, talk }, n) => [
  ...figures(talk, note, n),
  ...flaws(talk, note, n),
  ...pointers(talk, note, n),
]);
if (process.argv.includes('--judge')) judge(8);
else
  writeTable(
    'parser/facts/naming/table.ts',
    'TABLE',
    'Written by tests/learn/naming.ts: a sign, and hundredths where a name is sought for a figure, a flaw, a pointer.',
    linesOf(
      USES.map((use) => learn(examples.filter((e) => e.use === use))),
      LEAST,
    ),
  );

function judge(folds: number): void {
  for (const use of USES) {
    const all = examples.filter((e) => e.use === use);
    let right = 0;
    for (let k = 0; k < folds; k++) {
      const weights = learn(all.filter((e) => e.note % folds !== k));
      for (const e of all) if (e.note % folds === k && e.fits[choose(e, weights)]) right++;
    }
    const within = all.filter((e) => e.fits.some(Boolean)).length;
    console.log(`${use}: ${all.length} places, a right name is possible at ${within}, chosen at ${right}`);
  }
}

/** Every figure that the answers hold, with what it is of. */
function figures(talk: Talk, note: Note, n: number): Example[] {
  const taken = new Set<number>();
  const found = note.gold.measurements.flatMap((gold) => {
    const start = note.text.indexOf(gold.quote);
    const end = start + gold.quote.length;
    for (const [at, frame] of talk.frames.entries())
      for (const [k, { quantity: q }] of frame.chunks.entries())
        if (
          q &&
          !taken.has(q.start) &&
          q.start < end &&
          start < q.end &&
          sameAmount(gold.value, gold.unit, q.value.valueOf(), q.unit ?? gold.unit)
        ) {
          taken.add(q.start);
          return [{ of: gold.of, at, k, start: q.start }];
        }
    return [];
  });
  found.sort((a, b) => a.start - b.start);
  return found.map(({ of, at, k }, i) => {
    const before = found[i - 1];
    const carried = before && at - before.at <= 3 ? before.of.toLowerCase().split(/\s+/) : [];
    const frame = talk.frames[at]!;
    return example(
      talk,
      { use: 'figure', at, k, carried },
      n,
      of,
      `${frame.area ?? ''} ${kindOfMeasure(frame, k, frame.chunks[k]!.quantity!.unit) ?? ''}`,
    );
  });
}

/** Every problem, with the thing that is amiss. */
function flaws(talk: Talk, note: Note, n: number): Example[] {
  return note.gold.problems.flatMap(({ thing, quote }) => {
    const start = note.text.indexOf(quote);
    const within = [...talk.frames.entries()].filter(([, f]) => f.start < start + quote.length && start < f.end);
    const told = within.map(([at, f]) => [at, flawsIn(talk, f, at)[0]?.thing] as const).find(([, thing]) => thing);
    const [at] = told ?? within.find(([, f]) => f.chunks.some((c) => c.term?.kind === 'defect')) ?? within[0] ?? [-1];
    return at < 0 ? [] : [example(talk, { use: 'flaw', at, k: flawIn(talk, at), told: told?.[1] ?? [] }, n, thing, '')];
  });
}

/** Every problem, next step and finished work whose thing is not in its own words. */
function pointers(talk: Talk, note: Note, n: number): Example[] {
  const { problems, followUps, done } = note.gold;
  const all = [
    ...problems.map(({ thing, quote }) => ({ thing, quote })),
    ...[...followUps, ...done].map(({ task, quote }) => ({
      thing: task.replace(/^\S+ (?:(?:out|down|up|back|off|on|in) )?/, ''),
      quote,
    })),
  ];
  return all.flatMap(({ thing, quote }) => {
    if (!contentWords(thing).size || share(thing, quote) >= 0.5) return [];
    const start = note.text.indexOf(quote);
    const inQuote = (f: Frame) => f.start < start + quote.length && start < f.end;
    const pointing = talk.frames.findIndex(
      (f) => inQuote(f) && f.chunks.some((c) => c.start >= start && POINTS.test(c.word)),
    );
    const at = pointing >= 0 ? pointing : talk.frames.findIndex(inQuote);
    return at < 0 ? [] : [example(talk, { use: 'pointer', at, k: pointerIn(talk, at) }, n, thing, '')];
  });
}

/** A name is worth most where it holds half of the wanted words or more, and half of its own are among them. */
function example(talk: Talk, place: Place, note: number, wanted: string, given: string): Example {
  const fits: boolean[] = [];
  const answers = possibleNames(talk, place).map((name) => {
    const said = wordsOfName(name);
    const whole = share(wanted, `${given} ${said}`) >= 0.5;
    const own = share(said, wanted);
    const of = share(wanted, said);
    fits.push(whole);
    const even = own + of > 0 ? (2 * own * of) / (own + of) : 0;
    // What "it" means must hold little else; a figure's name may.
    const loose = place.use === 'figure' ? 0.3 : 0.15;
    const worth = (whole && own > 0 ? loose : 0) + (whole && own >= 0.5 ? 0.6 - loose : 0) + 0.4 * even;
    return { signs: name.signs, worth: worth ** 2 };
  });
  return { use: place.use, note, answers, fits };
}
