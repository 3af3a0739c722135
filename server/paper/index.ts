import type { Item, Job, JobState } from '../jobs/types.ts';
import { amount, thingText } from '../talk/index.ts';
import { Sheet } from './sheet.ts';

/** What has still to be walked through: all but what was signed off or dropped, by area, in order of number. */
export function walkThrough(job: Job, state: JobState): Promise<Buffer> {
  const day = state.asOf.slice(0, 10);
  const sheet = new Sheet(`Walk-through, ${job.name}`, day);
  sheet.head(job.name, `Walk-through on ${dayText(day)}`);
  const items = state.items.filter((i) => i.state !== 'dropped' && i.state !== 'signed off');
  if (!items.length) sheet.words('Nothing on the list.');
  for (const [area, here] of grouped(items, (i) => i.area ?? 'No area')) {
    sheet.group(area);
    for (const item of here)
      sheet.line({
        lead: String(item.number),
        words: item.task,
        notes: notesOf(item, day),
        ticked: item.state === 'done',
      });
  }
  sheet.signatures('Walked through together. What is ticked is accepted; what is not is still to do.', [
    'For the builder',
    'For the owner',
  ]);
  return sheet.finish();
}

/** What is still to be bought or is on order, by the counter that sells it. */
export function shopping(job: Job, state: JobState): Promise<Buffer> {
  const day = state.asOf.slice(0, 10);
  const sheet = new Sheet(`Shopping list, ${job.name}`, day);
  sheet.head(job.name, `Shopping list of ${dayText(day)}`);
  const lines = state.order.filter((l) => l.state === 'to buy' || l.state === 'ordered');
  if (!lines.length) sheet.words('Nothing to buy.');
  for (const [counter, here] of grouped(lines, (l) => l.counter)) {
    sheet.group(counter);
    for (const line of here)
      sheet.line({
        lead: line.quantity === null ? 'How many?' : amount(line),
        words: [thingText(line), ...line.specs].join(', '),
        notes: [line.state === 'ordered' ? 'on order' : '', line.because].filter(Boolean),
        ticked: false,
      });
  }
  return sheet.finish();
}

function notesOf(item: Item, day: string): string[] {
  return [
    item.problem && !item.task.includes(item.problem) ? `found: ${item.problem}` : '',
    item.who ?? '',
    item.state === 'waiting' && item.waitingFor ? `waits for ${item.waitingFor}` : '',
    item.readyOn && item.readyOn > day ? `ready ${dayText(item.readyOn)}` : '',
    item.due ? `due ${dayText(item.due)}` : '',
    item.state === 'done' && item.closedOn ? `done ${dayText(item.closedOn)}` : '',
  ].filter(Boolean);
}

const dayText = (day: string) =>
  new Intl.DateTimeFormat('en-US', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${day}T00:00:00Z`));

/** In the order in which their groups were first met. */
function grouped<T>(lines: readonly T[], nameOf: (line: T) => string): [string, T[]][] {
  const groups = new Map<string, T[]>();
  for (const line of lines) groups.set(nameOf(line), [...(groups.get(nameOf(line)) ?? []), line]);
  return [...groups];
}
