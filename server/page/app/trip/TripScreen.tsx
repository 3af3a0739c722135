import type { JobView } from '../../../http/api.ts';
import type { Item, Measured } from '../../../jobs/types.ts';
import { canSpeak, readAloud } from '../kit/aloud.ts';
import { daysSpelt, dayWords } from '../kit/clock.ts';
import { fractionWords, groupBy, itemNotes, lineWords, quantityWords, readyFirst } from '../kit/words.ts';
import { WeekPlan } from '../list/pictures.tsx';
import { Bring } from './Bring.tsx';

/** Before driving out: what can be done, what to bring, what to cut, what to mind. */
export function TripScreen({ view }: { view: JobView }) {
  const { state, today } = view;
  const ready = state.items.filter((item) => item.state === 'open').sort(readyFirst);
  const waits = state.items.filter((item) => item.state === 'waiting').sort(readyFirst);
  const cuts = state.measurements.filter((m) => m.role === 'wanted');
  const found = state.measurements.filter((m) => m.role === 'found');
  const bring = state.order.filter((line) => line.state !== 'bought');
  // A view kept by an older page has no such list.
  const load = view.bring ? [...view.bring.tools, ...view.bring.parts] : [];
  const aloud = [
    `${ready.length} ready.`,
    ...ready.map((item) => `${item.number}. ${item.task}${item.area ? `, ${item.area}` : ''}`),
    ...(bring.length ? ['To bring.', ...bring.map(lineWords)] : []),
    ...(load.length ? ['Tools and small parts.', ...load.map(({ what }) => what)] : []),
    ...(cuts.length ? ['To cut.', ...cuts.map(measuredWords)] : []),
    ...state.cautions.map((caution) => caution.text),
  ];
  return (
    <div class="trip">
      <div class="title-row">
        <h1>Going back</h1>
        {canSpeak() && aloud.length > 1 && (
          <button type="button" class="plain" onClick={() => readAloud(aloud)}>
            Read aloud
          </button>
        )}
      </div>
      <WeekPlan items={state.items} today={today} />
      {state.cautions.length > 0 && (
        <section class="cautions">
          <h2>Mind</h2>
          <ul>
            {state.cautions.map((caution) => (
              <li key={caution.hazard}>
                <strong>{caution.hazard}.</strong> {caution.text} <small>{caution.source}</small>
                {caution.items.length > 0 && <small> No. {caution.items.join(', ')}.</small>}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="area">
        <h2>Ready</h2>
        {!ready.length && <p class="empty">Nothing can be worked on today.</p>}
        {groupBy(ready, (item) => item.area ?? 'No area').map(([area, items]) => (
          <div key={area}>
            <h3>{area}</h3>
            <Lines items={items} today={today} />
          </div>
        ))}
      </section>
      {waits.length > 0 && (
        <section class="area">
          <h2>Waits</h2>
          <Lines items={waits} today={today} />
        </section>
      )}
      {bring.length > 0 && (
        <section class="area">
          <h2>Bring</h2>
          <ul class="plain-list">
            {bring.map((line) => (
              <li key={line.key}>
                {lineWords(line)} <small>{line.state}</small>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Bring bring={view.bring} />
      <Sizes title="Cut and set to" sizes={cuts} today={today} />
      {state.checks.length > 0 && (
        <section class="area">
          <h2>Checks</h2>
          <ul class="plain-list">
            {state.checks.map((check) => (
              <li
                key={`${check.of} ${check.item} ${check.figure}`}
                class={check.result === 'does not fit' ? 'problem' : undefined}
              >
                <strong>
                  {check.of}: {check.result}.
                </strong>{' '}
                {check.result === 'cannot say'
                  ? `Missing: ${check.missing}.`
                  : `${check.figure} against ${check.limit}.`}{' '}
                {check.item && `No. ${check.item}. `}
                <small>{check.source}</small>
                {check.working && <small class="because">{daysSpelt(check.working, today)}</small>}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Sizes title="Measured" sizes={found} today={today} />
    </div>
  );
}

function Lines({ items, today }: { items: readonly Item[]; today: string }) {
  return (
    <ul class="plain-list">
      {items.map((item) => (
        <li key={item.key}>
          <b>{item.number}</b> {item.task}
          <span class="task-notes">
            {itemNotes(item, today).map((note) => (
              <span key={note}>{note}</span>
            ))}
          </span>
        </li>
      ))}
    </ul>
  );
}

const measuredWords = (m: Measured) => `${m.of} ${quantityWords(m.exact, m.unit)}`;

function Sizes({ title, sizes, today }: { title: string; sizes: readonly Measured[]; today: string }) {
  if (!sizes.length) return null;
  return (
    <section class="area">
      <h2>{title}</h2>
      <table class="sizes">
        <tbody>
          {sizes.map((m) => (
            <tr key={m.key}>
              <th scope="row">
                {m.of}
                {m.area && <small>{m.area}</small>}
              </th>
              <td>
                <b>{quantityWords(m.exact, m.unit)}</b>
                {m.earlier.length > 0 && <small>was {m.earlier.map((e) => fractionWords(e.exact)).join(', ')}</small>}
              </td>
              <td>{dayWords(m.on, today)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
