import type { Item } from '../../../jobs/types.ts';
import { dayAfter, shortDay } from '../kit/clock.ts';
import { isLive } from '../kit/words.ts';

/** How far the job is: closed against all, a stroke of the comb for each item. */
export function Progress({ items }: { items: readonly Item[] }) {
  const counted = items.filter((item) => item.state !== 'dropped');
  if (!counted.length) return null;
  const closed = counted.filter((item) => !isLive(item)).length;
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

/** The week from today: on which day each waiting or dated item can be worked on. */
export function WeekPlan({ items, today }: { items: readonly Item[]; today: string }) {
  const days = Array.from({ length: columns }, (_, k) => dayAfter(today, k));
  const planned = items.filter(isLive).flatMap((item) => {
    const from = item.readyOn && item.readyOn > today ? item.readyOn : item.due && !item.readyOn ? item.due : null;
    const column = from ? days.indexOf(from) : -1;
    return column < 0 ? [] : [{ item, column, due: from === item.due && !item.readyOn }];
  });
  if (!planned.length) return null;
  const wide = 42;
  const tall = 26;
  const height = 34 + planned.length * tall;
  const told = planned
    .map(({ item, column, due }) => `no. ${item.number} ${due ? 'due' : 'ready'} ${shortDay(days[column]!)}`)
    .join(', ');
  return (
    <svg class="week" viewBox={`0 0 ${columns * wide} ${height}`} role="img" aria-label={`The week: ${told}`}>
      {days.map((day, k) => (
        <g key={day}>
          <text x={k * wide + wide / 2} y={12} class="week-day">
            {shortDay(day).slice(0, 3)}
          </text>
          <text x={k * wide + wide / 2} y={26} class="week-day">
            {Number(day.slice(8))}
          </text>
          <line x1={k * wide} y1={0} x2={k * wide} y2={height} class="week-rule" />
        </g>
      ))}
      {planned.map(({ item, column, due }, k) => {
        const y = 34 + k * tall;
        return (
          <g key={item.key}>
            {!due && <path class="week-wait" d={`M2 ${y + 12}H${column * wide}`} />}
            <rect
              class={due ? 'week-due' : 'week-ready'}
              x={column * wide + 3}
              y={y + 2}
              width={wide - 6}
              height={tall - 6}
            />
            <text x={column * wide + wide / 2} y={y + 16} class={due ? 'week-no due' : 'week-no'}>
              {due && 'due '}
              {item.number}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
