import { tokenise } from '../../parser/hearing/tokens.ts';
import { sameArea } from '../../parser/trade/likeness.ts';
import { mentionsIn } from '../../parser/trade/mentions.ts';
import { bringFor } from '../../parser/trade/work.ts';
import type { Vocabulary } from '../../parser/types.ts';
import type { Item, JobState, Measured } from './types.ts';

/** What to load before driving out, with the numbers of the items that call for it. */
export interface BringList {
  tools: Brought[];
  parts: Brought[];
  /** Sizes to cut or set to, in the areas of those items. */
  sizes: Pick<Measured, 'key' | 'of' | 'area' | 'exact' | 'unit'>[];
}

export interface Brought {
  what: string;
  items: number[];
}

/** Tools and small parts for what can be worked on today, by the work that each item names; most called for first. */
export function bringOf({ items, measurements }: JobState, vocabulary: Vocabulary): BringList {
  const ready = items.filter((item) => item.state === 'open' && item.who === null);
  const called = new Map<string, number[]>();
  for (const { number, task } of ready)
    for (const what of bringFor(tokenise(task), vocabulary)) called.set(what, [...(called.get(what) ?? []), number]);
  const brought = [...called].map(([what, numbers]): Brought => ({ what, items: numbers }));
  brought.sort((a, b) => b.items.length - a.items.length);
  return {
    tools: brought.filter(({ what }) => isTool(what, vocabulary)),
    parts: brought.filter(({ what }) => !isTool(what, vocabulary)),
    sizes: measurements.filter((m) => m.role === 'wanted' && ready.some((item) => serves(m, item))).map(sizeOf),
  };
}

/** A thing that the vocabulary does not know is loaded with the tools. */
function isTool(what: string, vocabulary: Vocabulary): boolean {
  const found = mentionsIn(tokenise(what), what, vocabulary).at(-1);
  return !found || found.term.kind === 'tool';
}

const serves = (size: Measured, item: Item): boolean =>
  size.area !== null && item.area !== null ? sameArea(size.area, item.area) : true;

const sizeOf = ({ key, of, area, exact, unit }: Measured) => ({ key, of, area, exact, unit });
