import { isLive } from '../../../jobs/live.ts';
import type { Item } from '../../../jobs/types.ts';
import { shortDay } from '../../../talk/wording.ts';
import { dayAfter, daysBetween } from '../kit/clock.ts';
import { isClosed } from '../kit/words.ts';

/** How far the job is: closed against all, a stroke of the comb for each item. */
export function Progress({ items }: { items: readonly Item[] }) {
  const counted = items.filter((item) => item.state !== 'dropped' && item.state !== 'unsure');
  if (!counted.length) return null;
  const closed = counted.filter(isClosed).length;
  const step = 120 / counted.length;
  return (
    <figure class="progress">
      <svg
        viewBox="0 0 120 20"
        role="img"
        aria-label={`${closed} of ${counted.length} done`}
        preserveAspectRatio="none"
      >
        {counted.map((item, k) => (
          <rect
            key={item.key}
            class={k < closed ? 'full' : 'bare'}
            x={k * step}
            y={k < closed ? 0 : 9}
            width={Math.max(step * 0.7, 0.6)}
            height={k < closed ? 20 : 2}
          />
        ))}
      </svg>
      <figcaption aria-hidden="true">
        {closed} of {counted.length} done
      </figcaption>
    </figure>
  );
}

const columns = 7;
const wide = 48;
const tall = 40;
const head = 36;
/** Characters of a task that a row holds; the whole of it is told in words. */
const room = 44;

const short = (task: string) => (task.length > room ? `${task.slice(0, room - 1)}…` : task);

const told = { due: 'due', set: 'set for it', ready: 'ready' };

/** The week from today: on which day each waiting or dated item can be worked on. */
export function WeekPlan({ items, today }: { items: readonly Item[]; today: string }) {
  const days = Array.from({ length: columns }, (_, k) => dayAfter(today, k));
  const planned = items
    .filter(isLive)
    .flatMap((item) => {
      const from = item.readyOn && item.readyOn > today ? item.readyOn : item.due && !item.readyOn ? item.due : null;
      const column = from ? days.indexOf(from) : -1;
      const word: keyof typeof told = item.readyOn === null ? 'due' : item.readyOn === item.due ? 'set' : 'ready';
      return column < 0 ? [] : [{ item, column, word }];
    })
    .sort((a, b) => a.column - b.column || a.item.number - b.item.number);
  if (!planned.length) return null;
  const height = head + planned.length * tall + 4;
  const words = planned
    .map(({ item, column, word }) => `${shortDay(days[column]!)}, no. ${item.number} ${item.task} is ${told[word]}`)
    .join('; ');
  return (
    <figure class="week">
      <figcaption>This week: what becomes ready, is set or is due when</figcaption>
      <svg viewBox={`0 0 ${columns * wide} ${height}`} role="img" aria-label={`The week from today: ${words}`}>
        {days.map((day, k) => (
          <g key={day}>
            <text x={k * wide + wide / 2} y={13} class="week-day">
              {shortDay(day).slice(0, 3)}
            </text>
            <text x={k * wide + wide / 2} y={29} class="week-day">
              {Number(day.slice(8))}
            </text>
          </g>
        ))}
        {planned.map(({ item, column, word }, k) => {
          const y = head + k * tall;
          return (
            <g key={item.key}>
              <line x1={0} y1={y} x2={columns * wide} y2={y} class="week-rule" />
              <text x={4} y={y + 15} class="week-task">
                {short(`${item.number} ${item.task}`)}
              </text>
              {days.slice(1).map((day, n) => (
                <line key={day} x1={(n + 1) * wide} y1={y + 20} x2={(n + 1) * wide} y2={y + 36} class="week-rule" />
              ))}
              {word === 'ready' && column > 0 && <path class="week-wait" d={`M4 ${y + 28}H${column * wide}`} />}
              <rect
                class={word === 'ready' ? 'week-ready' : 'week-due'}
                x={column * wide + 2}
                y={y + 20}
                width={wide - 4}
                height={16}
              />
              <text x={column * wide + wide / 2} y={y + 32} class={word === 'ready' ? 'week-no' : 'week-no due'}>
                {word}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}

/** Days that the picture of the job goes back. */
const span = 14;

/** The job day by day: what came onto the list, above the line, and what was closed, below it; and what was left. */
export function JobSoFar({ items, start, today }: { items: readonly Item[]; start: string; today: string }) {
  const counted = items.filter((item) => item.state !== 'dropped' && item.state !== 'unsure');
  if (!counted.length) return null;
  const began = Math.min(span - 1, Math.max(0, daysBetween(start, today)));
  const days = Array.from({ length: began + 1 }, (_, k) => {
    const day = dayAfter(today, k - began);
    return {
      day,
      came: counted.filter((item) => item.openedOn === day).length,
      closed: counted.filter((item) => item.closedOn === day).length,
      left: counted.filter((item) => item.openedOn <= day && !(item.closedOn && item.closedOn <= day)).length,
    };
  });
  const mostCame = Math.max(...days.map((d) => d.came));
  const mostClosed = Math.max(...days.map((d) => d.closed));
  const unit = Math.min(12, 44 / Math.max(mostCame, mostClosed, 1));
  const line = 18 + mostCame * unit;
  const height = line + mostClosed * unit + 68;
  const step = 336 / days.length;
  const every = Math.ceil(days.length / 7);
  const bar = Math.min(26, step * 0.6);
  const told = days
    .filter((d) => d.came || d.closed)
    .map((d) => `${shortDay(d.day)}: ${d.came} new, ${d.closed} done, ${d.left} left`)
    .join('; ');
  return (
    <figure class="so-far">
      <svg viewBox={`0 0 336 ${height}`} role="img" aria-label={`The job day by day. ${told}`}>
        <line x1={0} y1={line} x2={336} y2={line} class="so-far-line" />
        {days.map(({ day, came, closed, left }, k) => {
          const x = (k + 0.5) * step;
          // A name stays inside the frame, and apart from its neighbour's.
          const named = k === days.length - 1 || (k % every === 0 && days.length - 1 - k >= every);
          const under = Math.min(Math.max(x, 27), 336 - 27);
          return (
            <g key={day}>
              {came > 0 && (
                <rect class="came" x={x - bar / 2} y={line - came * unit} width={bar} height={came * unit - 1} />
              )}
              {came > 0 && (
                <text x={x} y={line - came * unit - 4}>
                  {came}
                </text>
              )}
              {closed > 0 && <rect class="closed" x={x - bar / 2} y={line + 1} width={bar} height={closed * unit} />}
              {closed > 0 && (
                <text x={x} y={line + closed * unit + 13}>
                  {closed}
                </text>
              )}
              {named && (
                <>
                  <text x={under} y={height - 35}>
                    {shortDay(day).slice(0, 3)}
                  </text>
                  <text x={under} y={height - 20}>
                    {Number(day.slice(8))}
                  </text>
                  <text x={under} y={height - 5} class="faint">
                    {left} left
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
      <figcaption>Outlined: came onto the list. Filled: done. Under each day, what was left.</figcaption>
    </figure>
  );
}
