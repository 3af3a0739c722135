import { lengthText } from '../../parser/quantities/format.ts';
import { wordsOf } from '../../parser/trade/likeness.ts';
import type { Command } from '../../parser/types.ts';
import type { Reply } from '../http/api.ts';
import { isLive } from '../jobs/live.ts';
import type { Item, JobState, OrderLine } from '../jobs/types.ts';
import { answerLine, itemText, orderText } from './lineText.ts';
import { toldOf } from './told.ts';
import { isReady } from './wording.ts';

type Line = Reply['lines'][number];

/** The last so many measurements are read back. */
const MOST_MEASURED = 12;

/** Part of a house, which is no room of the list. */
const WHEREABOUTS = /^(?:upstairs|downstairs|outside|outdoors)$/;

/** What the list answers to a question about it. */
export function answer(state: JobState, { question, about: asked }: Command): Line[] {
  const today = state.asOf.slice(0, 10);
  const about = asked?.replace(/\?$/, '').toLowerCase() ?? null;
  const within = ({ area, task, who }: Item) =>
    !about || [area, task, who].some((words) => words?.toLowerCase().includes(about));
  const items = (chosen: Item[], none: string): Line[] =>
    chosen.length
      ? chosen.map((item) => answerLine(`${item.number}. ${itemText(item, today)}`, item.number))
      : [answerLine(none)];
  switch (question) {
    case 'order':
      return orderFor(state.order, about).map((text) => answerLine(text));
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
      return state.measurements.slice(-MOST_MEASURED).map((m) => answerLine(`${m.of}: ${lengthText(m.exact, m.unit)}`));
    case 'told':
      return about ? toldOf(state, about) : [answerLine('Asked about what? Name the thing.')];
    default: {
      const live = state.items.filter(isLive);
      const loose = live.filter((item) => item.area === null && !within(item));
      if (about && WHEREABOUTS.test(about) && live.length && !state.items.some(within))
        return [answerLine(`Nothing is told for "${about}" by name. All that is left:`), ...items(live, '')];
      if (!about || !loose.length)
        return items(live.filter(within), about ? `Nothing left in the ${about}.` : 'Nothing left.');
      return [
        ...items(live.filter(within), `Nothing told for the ${about} by name.`),
        answerLine(`${loose.length} more without a room: ${loose.map(({ number }) => `no. ${number}`).join(', ')}.`),
      ];
    }
  }
}

/** What is to buy, then what nobody is sure of; all of it where no line is from that shop, or for that room or work. */
function orderFor(order: readonly OrderLine[], about: string | null): string[] {
  const named = about === null ? order : order.filter((l) => isAbout(l, about));
  const open = order.some(({ state }) => state === 'to buy' || state === 'unsure');
  const meant = named.length ? named : order;
  const lines = meant.flatMap((l) => (l.state === 'to buy' ? orderText(l) : []));
  const unsure = meant.flatMap((l) => (l.state === 'unsure' ? orderText(l) : []));
  return [
    ...(named.length || !open ? [] : [`No goods are told for "${about}" by name. The whole order:`]),
    ...(lines.length ? lines : ['Nothing to buy.']),
    ...(unsure.length ? [`Not sure of: ${unsure.join('; ')}.`] : []),
  ];
}

function isAbout({ counter, item, specs, uses = [] }: OrderLine, about: string): boolean {
  const told = wordsOf([item, ...specs, ...uses].join(' '));
  return counter.includes(about.split(' ')[0]!) || [...wordsOf(about)].every((word) => told.has(word));
}
