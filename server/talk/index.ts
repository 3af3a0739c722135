import Fraction from 'fraction.js';
import { unitWord } from '../../parser/quantities/containers.ts';
import { lengthText, plain } from '../../parser/quantities/format.ts';
import type { Command, Fact, Material, MaterialStatus } from '../../parser/types.ts';
import type { Reply } from '../http/api.ts';
import { TAKEN } from '../jobs/endings/index.ts';
import { isLive } from '../jobs/live.ts';
import { perhapsDoneBy } from '../jobs/perhapsDone.ts';
import type { Check, Item, JobState, OrderLine } from '../jobs/types.ts';
import { areaOf, goodsWord, isReady, moneyWords, perhapsToBuy, taskWords, waitWords, whenWords } from './wording.ts';

type Line = Reply['lines'][number];

const MOST = 8;

/** What a note changed, short enough to read on a ladder: from the list before it to the list after. */
export function replyTo(before: JobState, after: JobState, noteId: string, facts: Fact[]): Reply {
  const asked = facts.find((f): f is Command => f.kind === 'command' && f.verb === 'ask');
  const lines = asked ? answer(after, asked) : changes(before, after, facts);
  const ask = after.questions.find((q) => q.noteId === noteId)?.ask ?? null;
  return { noteId, facts, lines, ask, unread: false };
}

function changes(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const out = [
    ...itemLines(before, after),
    ...unsureLine(before, after),
    ...orderLines(before, after, facts),
    ...unsureGoods(before, after),
    ...stockLines(before, after, facts),
    ...checkLines(before, after),
    ...cautionLines(before, after),
    ...noted(facts),
  ];
  if (!out.length)
    out.push({
      kind: 'answer',
      text: facts.length ? 'Kept. Nothing on the list changes.' : 'Kept. Nothing in it for the list.',
      item: null,
    });
  return out.length > MOST + 1
    ? [...out.slice(0, MOST), { kind: 'answer', text: `and ${out.length - MOST} more on the list`, item: null }]
    : out;
}

const CLOSED: Partial<Record<Item['state'], string>> = { dropped: 'Dropped', 'signed off': 'Signed off' };

function itemLines(before: JobState, after: JobState): Line[] {
  const was = new Map(before.items.map((i) => [i.key, i]));
  const today = after.asOf.slice(0, 10);
  return after.items.flatMap((item): Line[] => {
    const old = was.get(item.key);
    const text = itemText({ ...item, task: taskWords(item.task) }, today);
    const line = (kind: Line['kind'], words: string, more = ''): Line[] => [
      { kind, text: `${words}: ${text}${more}`, item: item.number },
    ];
    const closed = CLOSED[item.state] ?? (item.problem === null ? 'Done' : 'Fixed');
    if (item.state === 'unsure') return [];
    // What was never on the list needs no number.
    if (!old) return isLive(item) ? line('opened', `New, no. ${item.number}`) : line('closed', closed);
    if (isLive(old) && !isLive(item))
      return item.history.at(-1)?.what === TAKEN
        ? line('closed', `Taken as done, no. ${item.number}`, `. If not, say "reopen ${item.number}"`)
        : line('closed', `${closed}, no. ${item.number}`);
    if (old.state !== 'signed off' && item.state === 'signed off')
      return line('closed', `${closed}, no. ${item.number}`);
    if (!isLive(old) && isLive(item))
      return line('opened', `${old.state === 'unsure' ? 'On the list' : 'Open again'}, no. ${item.number}`);
    if (old.who !== item.who && item.history.at(-1)?.what.startsWith('given to'))
      return line('changed', `Given to ${item.who}, no. ${item.number}`);
    if (old.history.length === item.history.length) return [];
    if (perhapsDoneBy(item) !== null)
      return line('changed', `No. ${item.number}`, `. If so, say "${item.number} is done"`);
    return line(
      'changed',
      `${item.history.at(-1)?.what === 'said again' ? 'The same as' : 'Added to'} no. ${item.number}`,
    );
  });
}

/** What was heard and is likelier no item: in one line, since it asks for no more than a look. */
function unsureLine(before: JobState, after: JobState): Line[] {
  const known = new Set(before.items.map((i) => i.key));
  const heard = after.items.filter((i) => i.state === 'unsure' && !known.has(i.key));
  if (!heard.length) return [];
  const named = heard.map((item) => `${item.number}. ${taskWords(item.task)}`).join('; ');
  return [
    {
      kind: 'answer',
      text: `Not sure, so kept apart: ${named}. To list it, say "keep ${heard[0]!.number}"`,
      item: null,
    },
  ];
}

/** Why goods left the order, as the note told it. */
const offOrder: Partial<Record<MaterialStatus, string>> = {
  bought: 'Bought, off the order',
  ordered: 'On order',
  have: 'On hand, off the order',
};

function orderLines(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const had = new Map(before.order.map((l) => [l.key, l]));
  const kept = new Set(after.order.map((l) => l.key));
  const buy = (text: string): Line => ({ kind: 'buy', text, item: null });
  const why = (line: OrderLine) => {
    const told = facts.find((f): f is Material => f.kind === 'material' && f.item === line.item);
    return (told && offOrder[told.status]) ?? 'Off the order';
  };
  return [
    ...after.order.flatMap((line) => {
      const old = had.get(line.key);
      if (line.state === 'unsure') return [];
      if (!old || old.state === 'unsure') return buy(`To buy: ${orderText(line)}`);
      return old.quantity === line.quantity ? [] : buy(`To buy is now ${orderText(line)} (was ${amount(old)})`);
    }),
    ...before.order.filter((line) => !kept.has(line.key)).map((line) => buy(`${why(line)}: ${orderText(line)}`)),
  ];
}

/** Goods likelier got by now than still to buy: in one line, since it asks for no more than a look. */
function unsureGoods(before: JobState, after: JobState): Line[] {
  const known = new Set(before.order.flatMap((l) => (l.state === 'unsure' ? l.key : [])));
  const goods = after.order.filter((l) => l.state === 'unsure' && !known.has(l.key));
  if (!goods.length) return [];
  const text = `${perhapsToBuy}: ${goods.map(orderText).join('; ')}. If so, say "still need the ${goods[0]!.item}"`;
  return [{ kind: 'answer', text, item: null }];
}

/** What is left in the van, where the note told of having, using or returning it. */
function stockLines(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const told = new Set(
    facts.flatMap((f) => (f.kind === 'material' && /^(?:have|used|returned)$/.test(f.status) ? f.item : [])),
  );
  const was = new Map(before.onHand.map((h) => [`${h.item} ${h.size}`, h.quantity]));
  return after.onHand
    .filter((h) => told.has(h.item) && was.get(`${h.item} ${h.size}`) !== h.quantity)
    .map((h) => ({ kind: 'changed', text: `On hand now: ${orderText(h)}`, item: null }));
}

function checkLines(before: JobState, after: JobState): Line[] {
  const told = new Set(before.checks.map(checkText));
  return after.checks.flatMap((check): Line[] =>
    told.has(checkText(check)) ? [] : [{ kind: 'check', text: checkText(check), item: check.item }],
  );
}

function cautionLines(before: JobState, after: JobState): Line[] {
  const planned = (plan: JobState['early'][number]) => `${plan.task} ${plan.plannedOn} ${plan.readyOn}`;
  const early = new Set(before.early.map(planned));
  const hazards = new Set(before.cautions.map((c) => c.hazard));
  return [
    ...after.early.flatMap((plan): Line[] =>
      early.has(planned(plan))
        ? []
        : [
            {
              kind: 'caution',
              text: `Too early: ${plan.task} on ${plan.plannedOn}. It ${waitWords(plan.waitingFor) ?? 'waits'}: ready ${plan.readyOn}${plan.readyAt ? ` at ${plan.readyAt}` : ''}.`,
              item: plan.item,
            },
          ],
    ),
    ...after.cautions.flatMap((caution): Line[] =>
      hazards.has(caution.hazard) ? [] : [{ kind: 'caution', text: caution.text, item: caution.items[0] ?? null }],
    ),
  ];
}

const MOST_SIZES = 4;

/** The line begins with that word already. */
export const decided = (what: string): string => what.replace(/^decided (?:on |to |that )?/, '');

/** What changes no line of the list and is kept all the same, read back so that a wrong number is seen. */
function noted(facts: readonly Fact[]): Line[] {
  const kept = (text: string): Line => ({ kind: 'changed', text, item: null });
  const sizes = new Map<string, string[]>();
  for (const f of facts)
    if (f.kind === 'measurement') sizes.set(f.of, [...(sizes.get(f.of) ?? []), lengthText(f.exact, f.unit)]);
  const told = [...sizes].slice(0, MOST_SIZES).map(([of, values]) => `${of} ${values.join(' x ')}`);
  if (sizes.size > MOST_SIZES) told.push(`and ${sizes.size - MOST_SIZES} more`);
  return [
    ...(told.length ? [kept(`Measured: ${told.join('; ')}`)] : []),
    ...facts.flatMap((f) => {
      if (f.kind === 'decision') return kept(`Decided: ${decided(f.what)}`);
      if (f.kind === 'spending') return kept(`Spent: ${moneyWords(f.amount, f.currency)}`);
      return [];
    }),
  ];
}

/** `guard height: does not fit. 34 in against 36 in (IRC R312.1.2)`; what must be known where it cannot be said. */
export const checkText = ({ of, result, figure, limit, source, missing }: Check): string =>
  result === 'cannot say'
    ? `${of}: cannot say without ${missing}${figure && ` (${figure} so far${limit && `, limit ${limit}`})`} (${source})`
    : `${of}: ${result}. ${figure} against ${limit} (${source})`;

/**
 * `plane door (hall), Luis, by 2026-05-15`; days that are past are not told, but for one that was missed. What may be done
 * says by which words: `plane door (hall), perhaps done: "shuts sweet"`.
 */
export const itemText = (item: Item, today: string): string =>
  [
    `${item.task}${areaOf(item) ? ` (${item.area})` : ''}`,
    ...(item.who ? [item.who] : []),
    ...(isLive(item) ? whenWords(item, today) : []),
    ...perhapsWords(item),
  ].join(', ');

const perhapsWords = (item: Item): string[] => {
  const words = perhapsDoneBy(item);
  return words === null ? [] : [`perhaps done: "${words.trim()}"`];
};

type Goods = Pick<OrderLine, 'item' | 'size' | 'quantity' | 'unit'>;

const overOne = (goods: Pick<Goods, 'quantity'>) => new Fraction(goods.quantity ?? 1).compare(1) > 0;

/** `2 bags`, `3`, `some` where nobody said how many. */
export const amount = (goods: Pick<Goods, 'quantity' | 'unit'>): string =>
  goods.quantity === null
    ? 'some'
    : `${plain(new Fraction(goods.quantity))} ${goods.unit === null || goods.unit === 'each' ? '' : unitWord(goods.unit, overOne(goods))}`.trim();

/** `deck boards, 12 ft` for four of them. */
export const thingText = (goods: Goods): string =>
  `${goodsWord(goods.item, goods.unit, overOne(goods))}${goods.size && !goods.item.includes(goods.size) ? `, ${goods.size}` : ''}`;

/** `3 bags thinset`, `4 deck boards, 12 ft`. */
export const orderText = (goods: Goods): string => `${amount(goods)} ${thingText(goods)}`;

function answer(state: JobState, asked: Command): Line[] {
  const today = state.asOf.slice(0, 10);
  const about = asked.about?.replace(/\?$/, '').toLowerCase() ?? null;
  const within = (item: Item) => !about || (item.area ?? '').toLowerCase().includes(about) || item.task.includes(about);
  const items = (chosen: Item[], none: string): Line[] =>
    chosen.length
      ? chosen.map((item) => ({ kind: 'answer', text: `${item.number}. ${itemText(item, today)}`, item: item.number }))
      : [{ kind: 'answer', text: none, item: null }];
  switch (asked.question) {
    case 'order': {
      const meant = state.order.filter(
        (l) => !about || l.counter.includes(about.split(' ')[0]!) || l.item.includes(about),
      );
      const lines = meant.flatMap((l) => (l.state === 'to buy' ? orderText(l) : []));
      const unsure = meant.flatMap((l) => (l.state === 'unsure' ? orderText(l) : []));
      return [
        ...(lines.length ? lines : ['Nothing to buy.']),
        ...(unsure.length ? [`Not sure of: ${unsure.join('; ')}.`] : []),
      ].map((text) => ({ kind: 'answer', text, item: null }));
    }
    case 'waiting':
      return items(
        state.items.filter((i) => i.state === 'waiting' && within(i)),
        'Nothing is waiting.',
      );
    case 'ready':
      return items(
        state.items.filter((i) => isReady(i, today) && within(i)),
        'Nothing is ready.',
      );
    case 'measurements':
      return state.measurements.slice(-12).map((m) => ({
        kind: 'answer',
        text: `${m.of}: ${lengthText(m.exact, m.unit)}`,
        item: null,
      }));
    default:
      return items(
        state.items.filter((i) => isLive(i) && within(i)),
        about ? `Nothing left in the ${about}.` : 'Nothing left.',
      );
  }
}
