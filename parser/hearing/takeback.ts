import type { Token } from '../types.ts';

const NUMBER_SCOPE = [
  'no wait make that',
  'no wait make it',
  'no make that',
  'no make it',
  'wait make that',
  'make that',
  'no wait',
  'wait no',
  'no hang on',
  'hang on',
  'no sorry',
  'sorry',
  'scratch that make it',
  'scratch that',
  'or rather',
  'i mean',
  'correction',
  'no no',
  'no i mean',
  'no actually',
  'actually no',
  'actually',
  'no it was',
  'no call it',
  'call it',
  'rather',
  'excuse me',
  'no its',
  "no it's",
  'strike that',
  'no lets say',
  "no let's say",
  'wait',
  'no get',
  'better make it',
  'better make that',
  'not sorry',
].map((s) => s.split(' '));
const CLAUSE_SCOPE = [
  'scratch that last bit',
  'scratch that',
  'strike that',
  'never mind that',
  'nevermind that',
  'forget that',
  'forget i said that',
  'delete that',
  'disregard that',
  'ignore that',
].map((s) => s.split(' '));

const longest = (tokens: readonly Token[], index: number, list: readonly string[][]): number => {
  let best = 0;
  for (const words of list) {
    let k = index;
    let ok = true;
    for (const w of words) {
      while (tokens[k]?.kind === 'mark' && tokens[k]!.text === ',' && k > index) k++;
      if (tokens[k]?.word !== w) {
        ok = false;
        break;
      }
      k++;
    }
    if (ok && k > best) best = k;
  }
  return best;
};

const STARTS_NUMBER =
  /^(?:\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|a|an|half|quarter)/;

/**
 * A taking-back phrase at `index`: "no wait", "make that", "scratch that". `until` is the first token after it.
 * Scope `number`: a number follows and replaces the one before. Scope `clause`: what was said before it is gone.
 */
export function takeBackAt(
  tokens: readonly Token[],
  index: number,
): { until: number; scope: 'number' | 'clause' } | null {
  const number = longest(tokens, index, NUMBER_SCOPE);
  const clause = longest(tokens, index, CLAUSE_SCOPE);
  let after = Math.max(number, clause);
  while (tokens[after]?.kind === 'mark' && /^[,.…]$/.test(tokens[after]!.text)) after++;
  if (number && tokens[after] && STARTS_NUMBER.test(tokens[after]!.word)) return { until: after, scope: 'number' };
  if (clause) return { until: after, scope: 'clause' };
  // A bare "no" between two numbers: "two, no, three bags".
  let k = index;
  if (tokens[k]?.word !== 'no') return number ? { until: after, scope: 'number' } : null;
  k++;
  while (tokens[k]?.kind === 'mark' && /^[,.…]$/.test(tokens[k]!.text)) k++;
  return tokens[k] && STARTS_NUMBER.test(tokens[k]!.word) && !/^an?$/.test(tokens[k]!.word)
    ? { until: k, scope: 'number' }
    : null;
}
