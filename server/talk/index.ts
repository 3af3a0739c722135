import Fraction from 'fraction.js';
import { plain } from '../../parser/quantities/format.ts';
import type { Command, Fact } from '../../parser/types.ts';
import type { Reply } from '../http/api.ts';
import type { Check, Item, JobState, OrderLine } from '../jobs/types.ts';

type Line = Reply['lines'][number];

const live = (item: Item) => item.state === 'open' || item.state === 'waiting';
const MOST = 8;

/** What a note changed, short enough to read on a ladder: from the list before it to the list after. */
export function replyTo(before: JobState, after: JobState, noteId: string, facts: Fact[]): Reply {
  const asked = facts.find((f): f is Command => f.kind === 'command' && f.verb === 'ask');
  const lines = asked ? answer(after, asked) : changes(before, after, facts);
  const ask = after.questions.find((q) => q.noteId === noteId)?.ask ?? null;
  return { noteId, facts, lines, ask, unread: false };
}

const CLOSED: Partial<Record<Item['state'], string>> = { dropped: 'Dropped', 'signed off': 'Signed off' };

function changes(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const was = new Map(before.items.map((i) => [i.key, i]));
  const out: Line[] = [];
  for (const item of after.items) {
    const old = was.get(item.key);
    const text = itemText(item);
    if (!old)
      out.push(
        live(item)
          ? { kind: 'opened', text: `New: ${text}`, item: item.number }
          : { kind: 'closed', text: `Done: ${text}`, item: item.number },
      );
    else if (live(old) && !live(item))
      out.push({
        kind: 'closed',
        text: `${CLOSED[item.state] ?? 'Done'}: ${text}`,
        item: item.number,
      });
    else if (old.state !== 'signed off' && item.state === 'signed off')
      out.push({ kind: 'closed', text: `Signed off: ${text}`, item: item.number });
    else if (!live(old) && live(item)) out.push({ kind: 'opened', text: `Open again: ${text}`, item: item.number });
    else if (old.who !== item.who && item.history.at(-1)?.what.startsWith('given to'))
      out.push({ kind: 'changed', text: `Given to ${item.who}: no. ${item.number}: ${text}`, item: item.number });
    else if (old.history.length !== item.history.length)
      out.push({
        kind: 'changed',
        text: `${item.history.at(-1)?.what === 'said again' ? 'The same as' : 'Added to'} no. ${item.number}: ${text}`,
        item: item.number,
      });
  }
  const had = new Map(before.order.map((l) => [l.key, l]));
  for (const line of after.order) {
    const old = had.get(line.key);
    if (!old) out.push({ kind: 'buy', text: `To buy: ${orderText(line)}`, item: null });
    else if (old.quantity !== line.quantity)
      out.push({ kind: 'buy', text: `To buy is now ${orderText(line)} (was ${amount(old)})`, item: null });
  }
  for (const line of before.order)
    if (!after.order.some((l) => l.key === line.key))
      out.push({ kind: 'buy', text: `Off the order: ${line.item}`, item: null });
  const told = new Set(before.checks.map(checkText));
  for (const check of after.checks)
    if (!told.has(checkText(check))) out.push({ kind: 'check', text: checkText(check), item: check.item });
  for (const plan of after.early)
    if (!before.early.some((e) => e.task === plan.task && e.plannedOn === plan.plannedOn && e.readyOn === plan.readyOn))
      out.push({
        kind: 'caution',
        text: `Too early: ${plan.task} on ${plan.plannedOn}. It waits for ${plan.waitingFor}: ready ${plan.readyOn}.`,
        item: plan.item,
      });
  for (const caution of after.cautions)
    if (!before.cautions.some((c) => c.hazard === caution.hazard))
      out.push({ kind: 'caution', text: caution.text, item: caution.items[0] ?? null });
  const measured = facts.filter((f) => f.kind === 'measurement').length;
  if (measured)
    out.push({ kind: 'changed', text: `${measured} measurement${measured > 1 ? 's' : ''} kept`, item: null });
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

/** `guard height: does not fit. 34 in against 36 in (IRC R312.1.2)`; what must be known where it cannot be said. */
export const checkText = ({ of, result, figure, limit, source, missing }: Check): string =>
  result === 'cannot say'
    ? `${of}: cannot say without ${missing}${figure && ` (${figure} so far${limit && `, limit ${limit}`})`} (${source})`
    : `${of}: ${result}. ${figure} against ${limit} (${source})`;

export const itemText = (item: Item) =>
  `${item.task}${item.area ? ` (${item.area})` : ''}${item.who ? `, ${item.who}` : ''}${item.readyOn ? `, ready ${item.readyOn}` : item.due ? `, by ${item.due}` : ''}`;

/** `2 bags`, `3`, `some` where nobody said how many. */
export const amount = (line: Pick<OrderLine, 'quantity' | 'unit'>) =>
  line.quantity === null
    ? 'some'
    : `${plain(new Fraction(line.quantity))} ${line.unit === null || line.unit === 'each' ? '' : plural(line)}`.trim();
const plural = ({ quantity, unit }: Pick<OrderLine, 'quantity' | 'unit'>) =>
  new Fraction(quantity ?? 1).compare(1) > 0 &&
  /^(?:bag|box|roll|tube|sheet|can|tub|tin|bucket|bundle|stick|pack|case|gallon|pail|kit|coil|length)$/.test(unit ?? '')
    ? unit === 'box'
      ? 'boxes'
      : `${unit}s`
    : (unit ?? '');

/** `3 bags thinset`, `2 gfci, 20 A`. */
export const orderText = (line: OrderLine) =>
  `${amount(line)} ${line.item}${line.size && !line.item.includes(line.size) ? `, ${line.size}` : ''}`.trim();

function answer(state: JobState, asked: Command): Line[] {
  const about = asked.about?.replace(/\?$/, '').toLowerCase() ?? null;
  const within = (item: Item) => !about || (item.area ?? '').toLowerCase().includes(about) || item.task.includes(about);
  const items = (chosen: Item[], none: string): Line[] =>
    chosen.length
      ? chosen.map((item) => ({ kind: 'answer', text: `${item.number}. ${itemText(item)}`, item: item.number }))
      : [{ kind: 'answer', text: none, item: null }];
  switch (asked.question) {
    case 'order': {
      const lines = state.order.filter(
        (l) => l.state === 'to buy' && (!about || l.counter.includes(about.split(' ')[0]!) || l.item.includes(about)),
      );
      return lines.length
        ? lines.map((l) => ({ kind: 'answer', text: orderText(l), item: null }))
        : [{ kind: 'answer', text: 'Nothing to buy.', item: null }];
    }
    case 'waiting':
      return items(
        state.items.filter((i) => i.state === 'waiting' && within(i)),
        'Nothing is waiting.',
      );
    case 'ready':
      return items(
        state.items.filter((i) => i.state === 'open' && within(i)),
        'Nothing is ready.',
      );
    case 'measurements':
      return state.measurements.slice(-12).map((m) => ({
        kind: 'answer',
        text: `${m.of}: ${plain(new Fraction(m.exact))} ${m.unit ?? ''}`.trim(),
        item: null,
      }));
    default:
      return items(
        state.items.filter((i) => live(i) && within(i)),
        about ? `Nothing left in the ${about}.` : 'Nothing left.',
      );
  }
}
