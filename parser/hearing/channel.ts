import { COSTS } from './costs.ts';

/** Sounds by their character codes, a row for each; 0 stands for none, so its row and column are put in and left out. */
const WIDTH = 128;
export const NONE = 0;
const VOWELS = new Set([...'aeiouAIYOUWQE3'].map((sound) => sound.charCodeAt(0)));
const WEAK = new Set([...'hwy'].map((sound) => sound.charCodeAt(0)));

/** What a change costs that was never counted. */
export function uncounted(said: number, heard: number): number {
  if (said === heard) return 0;
  if (said === NONE || heard === NONE) return VOWELS.has(said + heard) || WEAK.has(said + heard) ? 0.65 : 0.95;
  if (VOWELS.has(said) && VOWELS.has(heard)) return 0.5;
  return VOWELS.has(said) || VOWELS.has(heard) ? 1 : 0.95;
}

/** What it costs to hear one sound as another, by `said * 128 + heard`. */
export const CHANGE: Float64Array = Float64Array.from({ length: WIDTH * WIDTH }, (_, pair) =>
  uncounted(pair >> 7, pair & 127),
);
for (const row of COSTS.split('\n')) {
  const [said, ...heard] = row.split(' ');
  for (const cell of heard) CHANGE[codeOf(said!) * WIDTH + codeOf(cell[0]!)] = Number(cell.slice(1)) / 100;
}

/** `-` is written for none. */
function codeOf(sound: string): number {
  return sound === '-' ? NONE : sound.charCodeAt(0);
}

/** What it costs to hear the sounds of `said` as those of `heard`. */
export function costOf(said: string, heard: string): number {
  const row = new Float64Array(heard.length + 1);
  for (let j = 0; j < heard.length; j++) row[j + 1] = row[j]! + CHANGE[heard.charCodeAt(j)]!;
  for (let i = 0; i < said.length; i++) {
    const from = said.charCodeAt(i) << 7;
    const out = CHANGE[from]!;
    let corner = row[0]!;
    row[0] = corner + out;
    for (let j = 0; j < heard.length; j++) {
      const to = heard.charCodeAt(j);
      const above = row[j + 1]!;
      row[j + 1] = Math.min(corner + CHANGE[from + to]!, above + out, row[j]! + CHANGE[to]!);
      corner = above;
    }
  }
  return row[heard.length]!;
}
