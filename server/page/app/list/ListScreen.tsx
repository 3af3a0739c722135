import { useLayoutEffect, useState } from 'preact/hooks';
import type { JobView } from '../../../http/api.ts';
import { isLive } from '../../../jobs/live.ts';
import type { Item } from '../../../jobs/types.ts';
import { byArea, noArea } from '../../../talk/groups.ts';
import { isReady, isToWalk, shortDay } from '../../../talk/wording.ts';
import { canSpeak } from '../kit/aloud.ts';
import { paperPath } from '../kit/calls.ts';
import { daysBetween } from '../kit/clock.ts';
import { change } from '../kit/model.ts';
import { capital, isClosed, itemNotes, readyFirst, stateWord } from '../kit/words.ts';
import { ItemSheet } from './ItemSheet.tsx';
import { Progress } from './pictures.tsx';
import { ReadThrough } from './ReadThrough.tsx';

const filters: readonly { name: string; keeps(item: Item, today: string): boolean; seldom?: boolean }[] = [
  { name: 'Left', keeps: isLive },
  { name: 'Ready', keeps: isReady },
  { name: 'Waiting', keeps: (item, today) => isLive(item) && !isReady(item, today) },
  { name: 'Closed', keeps: isClosed },
  { name: 'Not sure', keeps: (item) => item.state === 'unsure', seldom: true },
];

const areaName = (item: Item) => item.area ?? noArea;

/** The punch list by area, what can be worked on first. */
export function ListScreen({ view }: { view: JobView }) {
  const [filter, setFilter] = useState(0);
  const [openKey, setOpenKey] = useState<string | null>(null);
  const [reading, setReading] = useState(false);
  const { items } = view.state;
  const { today } = view;
  const [area, setArea] = useState('');
  // The sheet holds what the PDF holds, whatever was filtered on the screen.
  const [onPaper, setOnPaper] = useState(false);
  // The sheet is drawn by now. It stands until the phone has taken it, or a thumb goes on: some phones do not tell.
  useLayoutEffect(() => {
    if (!onPaper) return;
    const over = () => setOnPaper(false);
    for (const sign of ['afterprint', 'pointerdown'] as const) addEventListener(sign, over);
    print();
    return () => {
      for (const sign of ['afterprint', 'pointerdown'] as const) removeEventListener(sign, over);
    };
  }, [onPaper]);
  const here = area ? items.filter((item) => areaName(item) === area) : items;
  const kept = onPaper
    ? items.filter(isToWalk)
    : here.filter((item) => filters[filter]!.keeps(item, today)).sort(readyFirst(today));
  // The one that was chosen can be left, also when nothing is in it any more.
  const areas = [...new Set([...byArea(view.job.areas, items).map(([name]) => name), ...(area ? [area] : [])])];
  const groups = byArea(view.job.areas, kept);
  const opened = items.find((item) => item.key === openKey);
  return (
    <div class="list">
      <div class="title-row">
        <h1>Punch list</h1>
        <Progress items={items} />
      </div>
      <p class="paper-only">
        {view.job.name}. Walk-through on {shortDay(view.today)}
      </p>
      <fieldset class="filters">
        <legend class="hidden">Show</legend>
        {filters.map(({ name, keeps, seldom }, k) => {
          const many = here.filter((item) => keeps(item, today)).length;
          return seldom && !many && k !== filter ? null : (
            <button
              key={name}
              type="button"
              class={seldom ? 'seldom' : ''}
              aria-pressed={k === filter}
              onClick={() => setFilter(k)}
            >
              {name} <b>{many}</b>
            </button>
          );
        })}
      </fieldset>
      {areas.length > 1 && (
        <label class={area ? 'area-filter chosen' : 'area-filter'}>
          <span class="hidden">Area shown</span>
          <select value={area} onChange={(e) => setArea(e.currentTarget.value)}>
            <option value="">Every area</option>
            {areas.map((name) => (
              <option key={name} value={name}>
                {capital(name)}, {items.filter((item) => areaName(item) === name && isLive(item)).length} left
              </option>
            ))}
          </select>
        </label>
      )}
      {!kept.length && (
        <p class="empty">
          {items.length ? 'Nothing of that kind here.' : 'Nothing on the list yet. What you say under Talk opens it.'}
        </p>
      )}
      {groups.map(([name, lines]) => (
        <section key={name} class="area">
          <h2>{name}</h2>
          <ul class="items">
            {lines.map((item) => (
              <ItemLine key={item.key} item={item} today={today} onOpen={() => setOpenKey(item.key)} />
            ))}
          </ul>
        </section>
      ))}
      {items.length > 0 && (
        <div class="row screen-only">
          {canSpeak() && (
            <button type="button" class="plain" onClick={() => setReading(true)}>
              Go through aloud
            </button>
          )}
          <button type="button" class="plain" onClick={() => setOnPaper(true)}>
            Print walk-through
          </button>
          <a class="plain" href={paperPath(view.job.id, 'walk-through')} target="_blank" rel="noopener">
            Walk-through as PDF
          </a>
        </div>
      )}
      <div class="signing paper-only">
        <p>
          Walked through together. The box before a line tells what is done; the box behind it is ticked for what is
          accepted. The rest is still to do.
        </p>
        <p class="signature">For the builder, and the day</p>
        <p class="signature">For the owner, and the day</p>
      </div>
      {opened && <ItemSheet item={opened} view={view} onClose={() => setOpenKey(null)} />}
      {reading && (
        <ReadThrough
          items={here.filter(isLive).sort(readyFirst(today))}
          today={today}
          onClose={() => setReading(false)}
        />
      )}
    </div>
  );
}

function ItemLine({ item, today, onOpen }: { item: Item; today: string; onOpen: () => void }) {
  const live = isLive(item);
  const closed = isClosed(item);
  const age = daysBetween(item.openedOn, today);
  const tick = () =>
    change(
      { kind: 'setState', item: item.key, state: closed ? 'open' : 'done' },
      !closed ? `No. ${item.number} done.` : `No. ${item.number} open again.`,
    );
  return (
    <li class={`item s-${item.state.replace(' ', '-')} ${stateWord(item, today)}`}>
      <button type="button" class="tick" aria-pressed={closed} onClick={() => void tick()}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <rect x="2" y="2" width="20" height="20" />
          {closed && <path d={item.state === 'dropped' ? 'M6 12H18' : 'M6 12.5L10.5 17L18 7'} />}
        </svg>
        <span class="hidden">
          {closed ? 'Open again' : 'Done'}: no. {item.number} {item.task}
        </span>
      </button>
      <button type="button" class="task" onClick={onOpen}>
        <span class="task-words">
          <b>{item.number}</b> {item.task}
          {item.doubtful && <em> (is that right?)</em>}
        </span>
        <span class="task-notes">
          <i>{stateWord(item, today)}</i>
          {itemNotes(item, today).map((note) => (
            <span key={note}>{note}</span>
          ))}
          {live && age > 0 && <span>{age === 1 ? '1 day' : `${age} days`} old</span>}
        </span>
      </button>
    </li>
  );
}
