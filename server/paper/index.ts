import type { Item, Job, JobState, OrderLine } from '../jobs/types.ts';
import { byArea, groupBy } from '../talk/groups.ts';
import { amount, thingText } from '../talk/index.ts';
import { daysSpelt, isToWalk, perhapsToBuy, shortDay, usesText, waitWords } from '../talk/wording.ts';
import { Sheet, SIGNATURES } from './sheet.ts';

/** What has still to be walked through: all but what was signed off or dropped, by area as the job names them, in order of number. */
export function walkThrough(job: Job, state: JobState): Promise<Buffer> {
  const day = state.asOf.slice(0, 10);
  const sheet = new Sheet(`Walk-through, ${job.name}`, day);
  sheet.head(job.name, `Walk-through on ${headDay(day)}`);
  const items = state.items.filter(isToWalk);
  if (!items.length) sheet.words('Nothing on the list.');
  const groups = byArea(job.areas, items);
  for (const [area, here] of groups) {
    sheet.group(area, 'Accepted');
    for (const item of here) {
      const line = {
        lead: String(item.number),
        words: item.task,
        notes: notesOf(item, day),
        ticked: item.state === 'done',
        accepts: true,
      };
      // Nobody signs on a sheet that shows nothing.
      sheet.line(line, item === groups.at(-1)![1].at(-1) ? SIGNATURES : 0);
    }
  }
  const boxes =
    ' The box before a line tells what is done; the box behind it is ticked for what is accepted. The rest is still to do.';
  sheet.signatures(`Walked through together.${items.length ? boxes : ''}`, ['For the builder', 'For the owner']);
  return sheet.finish();
}

/** What is still to be bought or is on order, by the counter that sells it. */
export function shopping(job: Job, state: JobState): Promise<Buffer> {
  const day = state.asOf.slice(0, 10);
  const sheet = new Sheet(`Shopping list, ${job.name}`, day);
  sheet.head(job.name, `Shopping list of ${headDay(day)}`);
  const lines = state.order.filter((l) => l.state === 'to buy' || l.state === 'ordered');
  if (!lines.length) sheet.words('Nothing to buy.');
  const perhaps = state.order.filter((l) => l.state === 'unsure');
  const groups: [string, readonly OrderLine[]][] = [...groupBy(lines, (l) => l.counter)];
  if (perhaps.length) groups.push([perhapsToBuy, perhaps]);
  for (const [name, here] of groups) {
    sheet.group(name);
    for (const line of here)
      sheet.line({
        lead: line.quantity === null ? 'How many?' : amount(line),
        words: [thingText(line), ...line.specs, usesText(line.uses)].filter(Boolean).join(', '),
        notes: [line.state === 'ordered' ? 'on order' : '', daysSpelt(line.because)].filter(Boolean),
        ticked: false,
      });
  }
  return sheet.finish();
}

function notesOf(item: Item, day: string): string[] {
  return [
    item.problem && !item.task.includes(item.problem) ? `found: ${item.problem}` : '',
    item.who ?? '',
    (item.state === 'waiting' && waitWords(item.waitingFor)) || '',
    item.readyOn && item.readyOn > day ? `ready ${shortDay(item.readyOn)}` : '',
    item.due ? `due ${shortDay(item.due)}` : '',
    item.state === 'done' && item.closedOn ? `done ${shortDay(item.closedOn)}` : '',
  ].filter(Boolean);
}

/** With its year, for the head of a sheet that is filed. */
const headDay = (day: string) => `${shortDay(day)}, ${day.slice(0, 4)}`;
