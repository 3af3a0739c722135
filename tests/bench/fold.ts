/** How long a long history takes to fold: `tsx tests/bench/fold.ts`. Prints milliseconds for 5,000, 10,000 and 20,000 entries. */
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { done, followUp, JOB, material, measurement, note, problem } from '../jobs/made.ts';

const THINGS =
  'outlet,faucet,door,window,shelf,casing,baseboard,switch,tile,drain,valve,hinge,stair,railing,cabinet'.split(',');
const DEFECTS = 'cracked,loose,leaking,bent,missing,stained'.split(',');
const pick = (from: readonly string[], k: number) => from[k % from.length]!;

function history(size: number): Entry[] {
  return Array.from({ length: size }, (_, k) => {
    const day = new Date(Date.UTC(2026, 0, 1) + k * 1_800_000).toISOString().slice(0, 19);
    const area = pick(JOB.areas, k >> 2);
    const thing = `${pick(THINGS, (k >> 2) * 7)} ${(k >> 2) % 40}`;
    const facts = [
      problem(thing, pick(DEFECTS, k >> 2), area),
      followUp(`replace ${thing}`, area),
      material(pick(THINGS, k), 1, k % 8 < 4 ? 'need' : 'bought'),
      done(`replace ${thing}`, area),
    ];
    const width = measurement(`${thing} width`, (k % 90) + 1, 'in', area);
    return note(`n${String(k).padStart(6, '0')}`, day, facts[k % 4]!, ...(k % 5 ? [] : [width]));
  });
}

fold(JOB, history(2000), '2036-01-01T00:00:00');
for (const size of [5000, 10_000, 20_000]) {
  const entries = history(size);
  const start = performance.now();
  const { items } = fold(JOB, entries, '2036-01-01T00:00:00');
  process.stdout.write(`${size} entries: ${Math.round(performance.now() - start)} ms, ${items.length} items\n`);
}
