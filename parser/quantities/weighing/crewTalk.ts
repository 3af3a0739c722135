import { companyOf } from '../../hearing/company.ts';
import { everyday } from '../../hearing/everyday.ts';
import { builtIn } from '../../trade/index.ts';
import { singular } from '../../trade/words.ts';
import type { Line } from '../line.ts';

const REACH = 10;
/** What crews and others say about as often is no evidence. */
const PLAIN = 0.5;
const SUMS = [-9, -5, -2.5, -1, 0, 1, 2.5, 5, 9, 14, 20];

const bandOf = (sum: number) => SUMS.findLast((least) => sum >= least) ?? 'less';

/** How a word is known: the trade's, by its kind; else by how much oftener crews say it than others do. */
export function knownAs(line: Line, at: number): string {
  const token = line.tokens[at];
  if (token?.kind !== 'word') return token ? token.kind : 'end';
  const term = builtIn().match(line.tokens, at)?.term;
  if (term) return term.kind;
  const word = token.word.replace(/'s$/, '');
  const company = companyOf(word) ?? companyOf(singular(word));
  if (company) return company.crew > 1.5 ? "crews'" : company.crew < -0.7 ? "others'" : 'plain';
  if (builtIn().has(word)) return 'verb';
  return everyday(word) ? 'strange' : 'unknown';
}

/** Whether the talk around a number is that of crews: what they say oftener than others, and things of the trade. */
export function* crewSigns(line: Line, from: number, until: number): Generator<string> {
  let [talk, names, strange, words] = [0, 0, 0, 0];
  for (let at = Math.max(0, from - REACH); at < Math.min(line.tokens.length, until + REACH); at++) {
    if (at === from) at = until;
    const token = line.tokens[at];
    if (token?.kind !== 'word') continue;
    words++;
    const crew = companyOf(token.word)?.crew;
    if (crew !== undefined && Math.abs(crew) > PLAIN) talk += crew;
    const as = knownAs(line, at);
    if (as === 'strange') strange++;
    else if (/^(?:material|part|tool|work|defect|verb)$/.test(as)) names++;
  }
  yield `talk ${bandOf(talk)}`;
  yield `talk each ${words ? bandOf((10 * talk) / words) : 'none'}`;
  yield `names ${Math.min(names, 4)}`;
  yield `strange ${Math.min(strange, 4)}`;
  yield `names ${Math.min(names, 2)} strange ${Math.min(strange, 2)}`;
}
