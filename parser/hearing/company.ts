import type { Token } from '../types.ts';
import { COMPANY } from './companyTable.ts';

/** What is known of a word from the talk of crews, in natural logarithms where not told otherwise. */
export interface Company {
  /** In how many annotated notes: 0 hardly any, and one more each time it doubles, up to 9 for "the". */
  said: number;
  /** How much oftener crews say it than others do. */
  crew: number;
  /** How much oftener it stands right before a name of the trade than elsewhere, and right behind one. */
  before: number;
  after: number;
  /** Counters beside whose goods it stands, and how much oftener than beside any. */
  counters: ReadonlyMap<string, number> | null;
}

let rows: Map<string, string> | undefined;
const read = new Map<string, Company | null>();

/** What is known of a word that crews say; null of one that they hardly ever do. */
export function companyOf(word: string): Company | null {
  let own = read.get(word);
  if (own !== undefined) return own;
  rows ??= new Map(COMPANY.split('\n').map((row) => [row.slice(0, row.indexOf(' ')), row]));
  const row = rows.get(word);
  own = row === undefined ? null : parsed(row);
  // Of words that it does not know it keeps nothing: there is no end to them.
  if (own) read.set(word, own);
  return own;
}

function parsed(row: string): Company {
  const [, said, crew = 0, before = 0, after = 0, ...counters] = row.split(' ');
  return {
    said: Number(said),
    crew: Number(crew) / 10,
    before: Number(before) / 10,
    after: Number(after) / 10,
    counters: counters.length
      ? new Map(counters.map((cell) => [cell.replace(/\d+$/, ''), Number(/\d+$/.exec(cell)![0]) / 10]))
      : null,
  };
}

/** How a token is written in the table: # is a number, . a mark or an end. */
export const slotOf = (token: Token | undefined): string =>
  token === undefined ? '.' : token.kind === 'word' ? token.word : token.kind === 'number' ? '#' : '.';

/** How a name of several words is written in the table. */
export const nameKey = (name: string): string => name.replaceAll(' ', '_');

/** How often crews say a word, or a name (`nameKey`). */
export const saidOf = (word: string): number => companyOf(word)?.said ?? 0;
