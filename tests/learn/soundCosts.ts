/**
 * `npx tsx tests/learn/soundCosts.ts`: counts which sounds of the trade's names were heard as which, in the vocabulary's
 * lists of mishearings and the phrases of `fixtures/hearing` that may be looked at, and writes what each change costs to
 * `parser/hearing/costs.ts`.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CHANGE, costOf, NONE, uncounted } from '../../parser/hearing/channel.ts';
import { soundsOf, soundsOfName } from '../../parser/hearing/sounds.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { heardPairs } from './heardPairs.ts';

const FILE = join(import.meta.dirname, '../../parser/hearing/costs.ts');
const SOUNDS = [...'ptkbdgfvsSCJ0mnNlrhwyaeiouAIYOUWQE3'].map((sound) => sound.charCodeAt(0));
/** So likely is what costs 1 beside what was heard right: e to the minus this. */
const SHARP = 6;
/** How many sounds' worth of counting the first guess stands for. */
const PRIOR = 15;
const ROUNDS = 4;
/** Pairs that sound less alike tell of no sounds. */
const FARTHEST = 0.45;
const DEAREST = 1;
/** Hundredths by which a cost must differ from the guess to be written down. */
const TOLD = 4;

/** The guess, not what was counted last time. */
const prior = Float32Array.from({ length: 128 * 128 }, (_, pair) => uncounted(pair >> 7, pair & 127));
CHANGE.set(prior);
const pairs = listed().concat(heardPairs().map(({ heard, meant }) => [nameSounds(meant), soundsOf(split(heard))]));

function listed(): [string, string][] {
  return builtIn().terms.flatMap((term) =>
    (term.misheard ?? []).map((heard): [string, string] => {
      const sounds = soundsOf(split(heard));
      const ways = [term.name, ...(term.also ?? [])].filter((way) => /^[a-z' -]+$/.test(way)).map(nameSounds);
      return [ways.reduce((a, b) => (costOf(b, sounds) < costOf(a, sounds) ? b : a), ways[0] ?? ''), sounds];
    }),
  );
}

function split(words: string): string[] {
  return words.toLowerCase().split(/[\s-]+/);
}

function nameSounds(name: string): string {
  return soundsOfName(split(name));
}

/** Which sound became which, along the cheapest way. */
function aligned(said: string, heard: string): [number, number][] {
  const table = Array.from({ length: said.length + 1 }, () => new Float64Array(heard.length + 1));
  const at = (i: number, text: string) => text.charCodeAt(i - 1);
  for (let i = 0; i <= said.length; i++)
    for (let j = 0; j <= heard.length; j++) {
      if (!i && !j) continue;
      table[i]![j] = Math.min(
        i && j ? table[i - 1]![j - 1]! + CHANGE[at(i, said) * 128 + at(j, heard)]! : Infinity,
        i ? table[i - 1]![j]! + CHANGE[at(i, said) * 128]! : Infinity,
        j ? table[i]![j - 1]! + CHANGE[at(j, heard)]! : Infinity,
      );
    }
  const steps: [number, number][] = [];
  for (let i = said.length, j = heard.length; i || j; ) {
    const here = table[i]![j]!;
    const near = (cost: number) => Math.abs(cost - here) < 1e-6;
    if (i && j && near(table[i - 1]![j - 1]! + CHANGE[at(i, said) * 128 + at(j, heard)]!))
      steps.push([at(i--, said), at(j--, heard)]);
    else if (i && near(table[i - 1]![j]! + CHANGE[at(i, said) * 128]!)) steps.push([at(i--, said), NONE]);
    else steps.push([NONE, at(j--, heard)]);
  }
  return steps;
}

for (let round = 0; round < ROUNDS; round++) {
  const counts = new Float64Array(128 * 128);
  const heardAs = new Float64Array(128);
  for (const [said, heard] of pairs) {
    if (!said || costOf(said, heard) > FARTHEST * said.length) continue;
    for (const [from, to] of aligned(said, heard)) {
      counts[from * 128 + to]! += 1;
      heardAs[to]! += 1;
    }
  }
  for (const from of [NONE, ...SOUNDS])
    for (const to of [NONE, ...SOUNDS]) {
      if (from === to) continue;
      const guess = Math.exp(-SHARP * prior[from * 128 + to]!);
      // What was put in stands beside how often that sound was heard at all.
      const right = from === NONE ? heardAs[to]! : counts[from * 128 + from]!;
      const likely = (counts[from * 128 + to]! + PRIOR * guess) / (right + PRIOR);
      CHANGE[from * 128 + to] = Math.max(0.05, Math.min(DEAREST, -Math.log(likely) / SHARP));
    }
}

const name = (code: number) => (code === NONE ? '-' : String.fromCharCode(code));
const lines = [NONE, ...SOUNDS].map((from) => {
  const cells = [NONE, ...SOUNDS].flatMap((to) => {
    const cost = Math.round(100 * CHANGE[from * 128 + to]!);
    return from !== to && Math.abs(cost - 100 * prior[from * 128 + to]!) >= TOLD ? [`${name(to)}${cost}`] : [];
  });
  return `${name(from)} ${cells.join(' ')}`;
});
writeFileSync(
  FILE,
  `/**
 * What a sound of a name costs when it is heard as another: the sound, then what it was heard as, each with hundredths,
 * 100 being another sound altogether; \`-\` is none. What is not here costs as \`channel.ts\` guesses. Counted by
 * \`tests/learn/soundCosts.ts\`.
 */
export const COSTS = \`
${lines.join('\n')}
\`;
`,
);
console.log(`${FILE}: ${lines.length} sounds, from ${pairs.length} pairs`);
