import type { JobView } from '../../../http/api.ts';
import { isLive } from '../../../jobs/live.ts';
import type { Item, Measured } from '../../../jobs/types.ts';
import { groupBy } from '../../../talk/groups.ts';
import { areaOf, cautionWords, isReady, taskWords } from '../../../talk/wording.ts';
import { daysSpelt, dayWords } from '../kit/clock.ts';
import { ReadAloud } from '../kit/ReadAloud.tsx';
import { fractionWords, itemNotes, lineWords, quantityWords, readyFirst, stateWords } from '../kit/words.ts';
import { WeekPlan } from '../list/pictures.tsx';
import { Bring } from './Bring.tsx';
import { CheckLines } from './Checks.tsx';

/** Before driving out: what can be done, what to bring, what to cut, what to mind. */
export function TripScreen({ view }: { view: JobView }) {
  const { state, today } = view;
  const ready = state.items.filter((item) => isReady(item, today)).sort(readyFirst(today));
  const waits = state.items.filter((item) => isLive(item) && !isReady(item, today)).sort(readyFirst(today));
  const unsure = state.items.filter((item) => item.state === 'unsure');
  const cuts = state.measurements.filter((m) => m.role === 'wanted');
  const found = state.measurements.filter((m) => m.role === 'found');
  const bring = state.order.filter((line) => line.state === 'to buy' || line.state === 'ordered');
  // A view kept by an older page has no such list.
  const load = view.bring ? [...view.bring.tools, ...view.bring.parts] : [];
  const told = (item: Item) =>
    [`${item.number}. ${taskWords(item.task)}`, ...[areaOf(item) ?? []].flat(), ...itemNotes(item, today)].join(', ');
  const aloud = [
    `${ready.length} ready.`,
    ...ready.map(told),
    ...(bring.length ? ['To bring.', ...bring.map(lineWords)] : []),
    ...(load.length ? ['Tools and small parts.', ...load.map(({ what }) => what)] : []),
    ...(cuts.length ? ['To cut.', ...cuts.map(measuredWords)] : []),
    ...state.cautions.map((caution) => `Mind: ${cautionWords(caution.text)}`),
    ...(waits.length ? ['Not yet.', ...waits.map(told)] : []),
    ...(unsure.length ? ['Not sure of.', ...unsure.map(told)] : []),
  ];
  return (
    <div class="trip">
      <div class="title-row">
        <h1>Going back</h1>
        <ReadAloud lines={aloud.length > 1 ? aloud : []} of="the briefing" />
      </div>
      <section class="area">
        <h2>Ready</h2>
        {!ready.length && (
          <p class="empty">
            {state.items.length
              ? 'Nothing can be worked on today.'
              : 'Nothing on the list yet. What you say under Talk opens it.'}
          </p>
        )}
        {groupBy(ready, (item) => item.area ?? 'No area').map(([area, items]) => (
          <div key={area}>
            <h3>{area}</h3>
            <Lines items={items} today={today} />
          </div>
        ))}
      </section>
      {bring.length > 0 && (
        <section class="area">
          <h2>Bring</h2>
          <ul class="plain-list load">
            {bring.map((line) => (
              <li key={line.key}>
                {lineWords(line)} <small>{stateWords(line)}</small>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Bring bring={view.bring} />
      <Sizes title="Cut and set to" sizes={cuts} today={today} />
      {state.cautions.length > 0 && (
        <section class="cautions">
          <h2>Mind</h2>
          <ul>
            {state.cautions.map((caution) => (
              <li key={caution.hazard}>
                <strong>{caution.hazard}.</strong> {cautionWords(caution.text)}
                {caution.items.length > 0 && <b> No. {caution.items.join(', ')}.</b>} <small>{caution.source}</small>
              </li>
            ))}
          </ul>
          <p>Local code and the licensed trade decide.</p>
        </section>
      )}
      {waits.length > 0 && (
        <section class="area">
          <h2>Not yet</h2>
          <WeekPlan items={state.items} today={today} />
          <Lines items={waits} today={today} />
        </section>
      )}
      {unsure.length > 0 && (
        <section class="area">
          <h2>Not sure of</h2>
          <Lines items={unsure} today={today} />
        </section>
      )}
      <section class="area">
        <h2>Checks</h2>
        <CheckLines
          checks={state.checks.map((check) => ({
            ...check,
            working: check.working && daysSpelt(check.working, today),
          }))}
        />
        <a class="plain" href="#fit">
          {state.checks.length ? 'Check another' : 'Does it fit?'}
        </a>
      </section>
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
