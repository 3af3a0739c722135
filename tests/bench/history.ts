/**
 * A long history made up for benchmarks: problems, repairs, goods, finished work, and a measurement now and then. Each
 * entry is put in text and read back, as the store does: objects that are put together by hand are slower to look at.
 */
import type { Entry } from '../../server/jobs/types.ts';
import { done, followUp, JOB, material, measurement, note, problem } from '../jobs/made.ts';

const THINGS =
  'outlet,faucet,door,window,shelf,casing,baseboard,switch,tile,drain,valve,hinge,stair,railing,cabinet'.split(',');
const DEFECTS = 'cracked,loose,leaking,bent,missing,stained'.split(',');
const pick = (from: readonly string[], k: number) => from[k % from.length]!;

export function history(size: number): Entry[] {
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
    const entry = note(`n${String(k).padStart(6, '0')}`, day, facts[k % 4]!, ...(k % 5 ? [] : [width]));
    return JSON.parse(JSON.stringify(entry)) as Entry;
  });
}
