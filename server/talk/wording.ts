/** Small words shared by replies, mail, paper and the phone page. Pure, and light enough for the phone's first load. */
import { plural } from '../../parser/quantities/plural.ts';

/** Goods by the heap, and short names: no s, however many. */
const heaps = new Set(
  'adhesive cable carpet caulk compound concrete conduit drywall fabric felt foam glue gravel grout hardware hardwood insulation laminate led lumber mdf membrane mesh mortar mud mulch osb paint paper plywood primer pvc sand sealer stain tape thinset trim underlayment vinyl wire wrap'.split(
    ' ',
  ),
);

/** The plural of goods that are counted. */
function many(word: string): string {
  const heap = heaps.has(word) || (/ing$/.test(word) && !/(?:fitting|opening|ceiling)$/.test(word));
  return heap ? word : plural(word);
}

const singles = new Set(['box', 'carton', 'case', 'pack']);

/** `deck boards` where more than one is counted singly, `deck screws` by the box, `mortar` by the bag. */
export function goodsWord(item: string, unit: string | null, overOne: boolean): string {
  const several = unit === null || unit === 'each' ? overOne : singles.has(unit);
  if (!several) return item;
  const [, head = item, rest = ''] = /^(.*?\S)( (?:for|with|of|in|to|on|and) .*)?$/.exec(item) ?? [];
  const words = head.split(' ');
  return [...words.slice(0, -1), many(words.at(-1)!)].join(' ') + rest;
}

/** Above goods that were asked for long ago, or only in passing. */
export const perhapsToBuy = 'Not sure if still to buy';

/** What goods are for, where their name does not say it: `for the exit sign`. Empty where nothing was told. */
export const usesText = (uses: readonly string[] = []): string =>
  uses.length ? `for the ${uses.join(' and the ')}` : '';

/** A flaw told in one breath: `rail post, out of plumb` for `rail post: out of plumb`. */
export const taskWords = (task: string): string => task.replace(': ', ', ');

/** What became of a closed item: a flaw that was dealt with must not read as if it were still so. */
export const closedTask = ({ task, problem, state }: { task: string; problem: string | null; state: string }): string =>
  `${taskWords(task)}${state === 'dropped' ? ', dropped' : problem === null ? '' : ', fixed'}`;

/** The area, unless the task names it by itself. */
export const areaOf = ({ task, area }: { task: string; area: string | null }): string | null =>
  area && !task.toLowerCase().includes(area.toLowerCase()) ? area : null;

interface Dated {
  state: string;
  due: string | null;
  readyOn: string | null;
  waitingFor?: string | null;
}

/** Open, and nothing sets it for a later day. */
export const isReady = ({ state, readyOn }: Dated, today: string): boolean =>
  state === 'open' && !(readyOn && readyOn > today);

/** When an item can or must be done, told of what is still ahead: `set for 2026-12-01`, `ready 2026-12-01, by 2026-12-04`. */
export function whenWords({ due, readyOn, waitingFor }: Dated, today: string): string[] {
  const hour = readyOn === today ? /, until (\d\d:\d\d)$/.exec(waitingFor ?? '')?.[1] : undefined;
  if (readyOn && readyOn > today && readyOn === due) return [`set for ${due}`];
  return [
    ...(readyOn && readyOn > today ? [`ready ${readyOn}`] : hour ? [`ready at ${hour}`] : []),
    ...(due ? [due < today ? `was due ${due}` : `by ${due}`] : []),
  ];
}

const onlyADay =
  /^(?:(?:until|till|by|on|the|this|next|first|thing|early|late|in|of|end|week|weekend|month|morning|afternoon|noon|night|tonight|today|tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day|\w+(?:st|nd|rd|th))\b\s*)+$/i;

/** What an item waits for, in words; null where that is nothing but the day, which is told beside it. */
export const waitWords = (waitingFor: string | null): string | null =>
  waitingFor === null || onlyADay.test(waitingFor) ? null : `waits for ${waitingFor}`;

const signs: Record<string, string> = { USD: '$', EUR: '€', GBP: '£' };

/** `$48`, `$12.50`. */
export const moneyWords = (amount: number, currency: string): string =>
  `${signs[currency] ?? `${currency} `}${Number.isInteger(amount) ? amount : amount.toFixed(2)}`;

/** On the sheet for the walk-through: all but what was accepted already or dropped. */
export const isToWalk = ({ state }: Pick<Dated, 'state'>): boolean =>
  state !== 'dropped' && state !== 'signed off' && state !== 'unsure';

/** A caution without the sentence that all of them end with, for where it is said once for all. */
export const cautionWords = (text: string): string => text.replace(/ Local code and the licensed trade decide\.$/, '');

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * `Wed May 13` for `2026-05-13` or a moment of that day. Put together here: the first form of dates that a browser is
 * asked for costs an old phone a quarter of a second, before the page can be talked to.
 */
export function shortDay(day: string): string {
  const at = new Date(day.slice(0, 10));
  return `${weekdays[at.getUTCDay()]} ${months[at.getUTCMonth()]} ${at.getUTCDate()}`;
}

/** Words with each day in them as people say it. */
export const daysSpelt = (words: string, spell: (day: string) => string = shortDay): string =>
  words.replace(/\b\d{4}-\d\d-\d\d\b/g, spell);
