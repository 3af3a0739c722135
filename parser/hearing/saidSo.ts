import { SAID_SO } from './saidSoTable.ts';

/** How often words that sound like a name of the trade were said and meant, by crews and by others: 0 never, and one more each time it doubles. */
export interface SaidSo {
  crews: number;
  others: number;
}

const NEVER: SaidSo = { crews: 0, others: 0 };
let known: Map<string, SaidSo> | undefined;

/** How often these words were said as they stand. */
export function saidSo(words: string): SaidSo {
  known ??= new Map(
    SAID_SO.split('\n').map((row) => {
      const [said, crews, others] = row.split('\t');
      return [said!, { crews: Number(crews), others: Number(others) }];
    }),
  );
  return known.get(words) ?? NEVER;
}
