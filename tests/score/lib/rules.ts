import type { Done, Fact, FollowUp, Material, Measurement, Problem } from '../../../parser/types.ts';
import { sameAmount } from './amounts.ts';
import type { Gold, ListName } from './corpus.ts';
import { share } from './wording.ts';

/** The parser's fact that answers each list. */
export interface FactOf {
  measurements: Measurement;
  materials: Material;
  problems: Problem;
  followUps: FollowUp;
  done: Done;
}

/** How one list is judged. */
export interface Rule<L extends ListName> {
  kind: Fact['kind'];
  /** How well it answers, 0 for not at all; the better one is paired first. `overlap` is 0 to 1, of the two quotes. */
  found(gold: Gold<L>, got: FactOf[L], overlap: number): number;
  /** Found, and every attribute right as well. */
  strict(gold: Gold<L>, got: FactOf[L]): boolean;
}

const HALF = 0.5;

/** What was said about it is about what was wanted, not a wandering clause that happens to hold the words. */
const toThePoint = (wording: string, wanted: string) => share(wording, wanted) >= HALF;

const sameTask = (gold: { task: string; quote: string }, got: { task: string }) =>
  share(gold.task, got.task) >= HALF && toThePoint(got.task, `${gold.task} ${gold.quote}`);

const taskFound = (gold: { task: string }, got: { task: string; quote: string }, overlap: number) =>
  overlap > 0.2 && share(gold.task, `${got.task} ${got.quote}`) >= HALF ? overlap + share(gold.task, got.task) : 0;

export const RULES: { [L in ListName]: Rule<L> } = {
  measurements: {
    kind: 'measurement',
    found: (gold, got, overlap) =>
      overlap > 0.2 && sameAmount(gold.value, gold.unit, got.value, got.unit) ? overlap + share(gold.of, got.of) : 0,
    strict: (gold, got) => share(gold.of, got.of) >= HALF,
  },
  materials: {
    kind: 'material',
    found: (gold, got, overlap) => {
      const named = share(gold.item, `${got.item} ${got.size ?? ''} ${got.specs.join(' ')}`);
      return overlap > 0.1 && named >= HALF ? overlap + named + (gold.status === got.status ? HALF : 0) : 0;
    },
    strict: (gold, got) =>
      gold.status === got.status &&
      (gold.quantity === null || got.quantity === null
        ? gold.quantity === got.quantity
        : sameAmount(gold.quantity, gold.unit, got.quantity, got.unit)),
  },
  problems: {
    kind: 'problem',
    found: (gold, got, overlap) =>
      overlap > 0.3 && share(gold.thing, `${got.thing} ${got.quote}`) >= HALF
        ? overlap + share(gold.thing, got.thing)
        : 0,
    strict: (gold, got) =>
      gold.state === got.state &&
      share(gold.thing, got.thing) >= HALF &&
      toThePoint(got.thing, `${gold.thing} ${gold.defect} ${gold.quote}`),
  },
  followUps: {
    kind: 'followUp',
    found: taskFound,
    strict: (gold, got) => sameTask(gold, got) && gold.due === got.due && gold.notBefore === got.notBefore,
  },
  done: { kind: 'done', found: taskFound, strict: sameTask },
};
