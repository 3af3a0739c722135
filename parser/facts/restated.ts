import { takeBackAt } from '../hearing/takeback.ts';
import type { Quantity, Reading, Token, TokenRange } from '../types.ts';

type Read = Omit<Reading, 'clauses'>;

/** Goods that others were named in place of, and the words that took them back. */
export interface Restated extends TokenRange {
  /** The count said anew with them; null where the first one stands: "a box of screws, sorry, nails". */
  by: Quantity | null;
}

/** So many words the longest way to take something back has, commas with it. */
const LONGEST = 8;
const ARTICLE = /^(?:an?|the|some|another|that|those|my|our)$/;
/** What may stand between a count and the name of its goods. */
const LEADS = /^(?:of|the|a|an|new|those|these|that|some)$/;
const POINTS = /^(?:those|them|these|that|it|each|em|'em|which)$/;

/** "A box of finish nails, no make that a box of brads", "two hinges, sorry, latches": the goods said last stand alone. */
export function restatedIn(reading: Read): Restated[] {
  const { tokens } = reading.heard;
  const goods = reading.terms.filter(({ term }) => /^(?:material|part|fixture)$/.test(term.kind));
  const endsAt = (until: number) => goods.find((m) => m.until === until);
  const counted = reading.quantities.flatMap((by): Restated[] => {
    if (by.unitKind === 'length' || !namesBehind(reading, by.until, goods)) return [];
    const marker = markerBefore(tokens, by.from);
    const last = marker === null ? undefined : endsAt(marker);
    if (!last) return [];
    const from = by.replaces?.[0]?.from ?? lotFrom(reading, last.from);
    return [{ from, until: by.from, by }];
  });
  const uncounted = goods.flatMap(({ from }): Restated[] => {
    const article = ARTICLE.test(tokens[from - 1]?.word ?? '');
    const marker = markerBefore(tokens, from) ?? (article ? markerBefore(tokens, from - 1) : null);
    const last = marker === null ? undefined : endsAt(marker);
    const told = counted.some((c) => last && c.from <= last.from && last.until <= c.until);
    return last && !told ? [{ from: last.from, until: from, by: null }] : [];
  });
  return [...counted, ...uncounted];
}

/** Where the words begin that take something back and end right before a place, their comma with them; null where none do. */
function markerBefore(tokens: readonly Token[], until: number): number | null {
  for (let k = until - 1; k >= Math.max(0, until - LONGEST); k--) {
    const { word } = tokens[k]!;
    // "Dries well, primer next" and "nails actually came" take nothing back.
    const takes =
      (takeBackAt(tokens, k)?.until === until && !/^(?:well|actually)$/.test(word)) ||
      (word === 'no' && until === k + 2 && tokens[k + 1]!.text === ',' && tokens[k - 1]?.text === ',');
    if (!takes) continue;
    let from = k;
    while (from > 0 && (tokens[from - 1]!.skip || /^[,.…]$/.test(tokens[from - 1]!.text) || isMarker(tokens, from - 1)))
      from--;
    return from;
  }
  return null;
}

/** A first word before the longer phrase: "actually | no make it". */
const isMarker = (tokens: readonly Token[], k: number) => /^(?:oh|actually|no|wait|sorry)$/.test(tokens[k]!.word);

/** True where a count has goods of its own behind it, and does not only point or end what was said. */
function namesBehind({ heard: { tokens }, quantities }: Read, at: number, goods: readonly TokenRange[]): boolean {
  const of = tokens[at]?.word === 'of';
  let k = at;
  while (LEADS.test(tokens[k]?.word ?? '')) k++;
  const word = tokens[k];
  if (word?.kind !== 'word' || POINTS.test(tokens[k - 1]?.word ?? '')) return false;
  // "Six sheets of drywall, no wait, seven of the half inch".
  if (quantities.some((q) => q.from === k)) return false;
  return of || goods.some((m) => m.from === k || m.from === k + 1);
}

/** Where the lot begins that goods are the name of: at its count, else at its article, else at the name. */
function lotFrom({ quantities, heard: { tokens } }: Read, name: number): number {
  const count = quantities.findLast((q) => q.until <= name && name - q.until <= 3);
  const joined =
    count && tokens.slice(count.until, name).every((t) => t.kind === 'word' && !/^(?:and|or|to)$/.test(t.word));
  if (joined) return count.from;
  return ARTICLE.test(tokens[name - 1]?.word ?? '') ? name - 1 : name;
}
