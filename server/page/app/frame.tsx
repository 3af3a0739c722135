import { useEffect, useState } from 'preact/hooks';
import { isLive } from '../../jobs/live.ts';
import { DayScreen } from './day/DayScreen.tsx';
import { dropOffer } from './kit/firm.ts';
import { type Screen, useScreen, useShown } from './kit/hooks.ts';
import { chooseJob, release, takeBack } from './kit/model.ts';
import { withPending } from './kit/pending.ts';
import type { Parcel } from './kit/phoneStore.ts';
import { ListScreen } from './list/ListScreen.tsx';
import { OrderScreen } from './order/OrderScreen.tsx';
import { ReckonScreen } from './reckon/ReckonScreen.tsx';
import { FirstJob, SetupScreen } from './setup/SetupScreen.tsx';
import { WordSheet } from './setup/WordSheet.tsx';
import { nothingKnown, TalkScreen } from './talk/TalkScreen.tsx';
import { TripScreen } from './trip/TripScreen.tsx';

const tabs: { screen: Screen; name: string }[] = [
  { screen: 'talk', name: 'Talk' },
  { screen: 'list', name: 'List' },
  { screen: 'order', name: 'Order' },
  { screen: 'trip', name: 'Next trip' },
  { screen: 'day', name: 'Day' },
];

/** Sums are reached from the order, checks from the next trip: the same tab leads back. */
const tabOf = (screen: Screen): Screen => (screen === 'reckon' ? 'order' : screen === 'fit' ? 'trip' : screen);

/** Header, the screen in front, the status line and the tabs under the thumb. */
export function Frame() {
  const shown = useShown();
  const screen = useScreen();
  const [teaching, setTeaching] = useState(false);
  const { sun } = shown.settings;
  useEffect(() => void document.documentElement.classList.toggle('sun', sun), [sun]);
  const view = shown.view && withPending(shown.view, shown.parcels);
  const reckons = screen === 'reckon' || screen === 'fit';
  const none = !view && shown.asked && screen !== 'setup' && !reckons;
  // Words that are being said keep their box, also where there is nowhere to send them yet.
  const boxStays = screen === 'talk' && !(none && shown.reached);
  return (
    <div class={`frame on-${screen}`}>
      <header class="head">
        <label class="job-pick">
          <span class="hidden">Job</span>
          <select value={shown.settings.jobId ?? ''} onChange={(e) => void chooseJob(e.currentTarget.value)}>
            {!shown.jobs.length && <option value="">{shown.asked ? 'No job yet' : 'Job'}</option>}
            {shown.jobs.map((job) => (
              <option key={job.id} value={job.id}>
                {job.name}
              </option>
            ))}
          </select>
        </label>
        <a class="setup-link" href="#setup" aria-current={screen === 'setup' ? 'page' : undefined}>
          Set-up
        </a>
      </header>
      <Unsent parcels={shown.parcels} reached={shown.reached || !view} trouble={shown.trouble} />
      <main key={screen} class="screen">
        {none && !boxStays && <NoJob reached={shown.reached} />}
        {boxStays && <TalkScreen view={view ?? null} unknown={none} />}
        {!view && !none && !boxStays && screen !== 'setup' && <p class="empty">Asking the server…</p>}
        {view && screen === 'list' && <ListScreen view={view} />}
        {view && screen === 'order' && <OrderScreen view={view} />}
        {view && screen === 'trip' && <TripScreen view={view} />}
        {view && screen === 'day' && <DayScreen view={view} />}
        {reckons && <ReckonScreen side={screen} canOrder={view !== null} />}
        {shown.started && screen === 'setup' && <SetupScreen view={view} />}
      </main>
      <div class="status">
        <p role="status">{shown.said?.text}</p>
        {shown.said?.undo && (
          <button type="button" class="plain" onClick={() => void takeBack()}>
            Undo
          </button>
        )}
        {shown.offer && !teaching && (
          <button type="button" class="plain" onClick={() => setTeaching(true)}>
            Teach “{shown.offer.also?.[0]}”
          </button>
        )}
      </div>
      {shown.offer && teaching && (
        <WordSheet
          word={shown.offer}
          onClose={() => {
            dropOffer();
            setTeaching(false);
          }}
        />
      )}
      <nav class="tabs" aria-label="Screens">
        {tabs.map((tab) => (
          <a key={tab.screen} href={`#${tab.screen}`} aria-current={tabOf(screen) === tab.screen ? 'page' : undefined}>
            {tab.name}
            {tab.screen === 'list' && view && <b>{view.state.items.filter(isLive).length}</b>}
            {tab.screen === 'order' && view && <b>{view.state.order.filter((l) => l.state === 'to buy').length}</b>}
          </a>
        ))}
      </nav>
    </div>
  );
}

function NoJob({ reached }: { reached: boolean }) {
  if (reached) return <FirstJob />;
  return <p class="empty">{nothingKnown}</p>;
}

/** Enough of a note to know it by. */
const beginning = (text: string) => `“${text.length > 40 ? `${text.slice(0, 38).trimEnd()}…` : text}”`;

/** Always in sight: how much is only on this phone, and what the server would not take. */
function Unsent({
  parcels,
  reached,
  trouble,
}: {
  parcels: readonly Parcel[];
  reached: boolean;
  trouble: string | null;
}) {
  const parked = parcels.filter((p) => p.parked !== null);
  const told = parcels.filter((p) => !('quiet' in p));
  const waiting = told.length - parked.length;
  return (
    <section class="unsent" aria-label="Only on this phone" data-unsent={told.length}>
      {waiting > 0 && (
        <p>
          <strong>{waiting} not sent</strong>
          {trouble
            ? '. Kept here, it goes out by itself.'
            : reached
              ? ', sending.'
              : '. No signal: kept here, it goes out by itself.'}
        </p>
      )}
      {!waiting && !reached && (
        <p>
          <strong>No signal.</strong> This is how things stood; what you say is kept here and goes out by itself.
        </p>
      )}
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      {parked.map((parcel) => (
        <div key={parcel.id} class="parked">
          <p role="alert">
            <strong>Not taken:</strong> {parcel.kind === 'note' ? beginning(parcel.note.text) : `${parcel.kind}.`}{' '}
            {parcel.parked}
          </p>
          <button type="button" class="plain" onClick={() => void release(parcel.id, 'again')}>
            Try again
          </button>
          <button type="button" class="plain" onClick={() => void release(parcel.id, 'away')}>
            Throw away
          </button>
        </div>
      ))}
    </section>
  );
}
