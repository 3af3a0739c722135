import type { JobView } from '../../../http/api.ts';
import { useShown } from '../kit/hooks.ts';
import { settle } from '../kit/model.ts';
import { canRecord } from '../kit/recorder.ts';
import { canListen } from '../talk/liveWords.ts';
import { JobForm } from './JobForm.tsx';
import { PriceList } from './PriceList.tsx';
import { ReadAgain } from './ReadAgain.tsx';
import { Words } from './Words.tsx';

/** The job's particulars, and the choices of this phone. */
export function SetupScreen({ view }: { view: JobView | null }) {
  const { settings, talks } = useShown();
  const heard = talks.flatMap((talk) => talk.by ?? []);
  const crew = [...new Set([...(view?.job.crew ?? []), ...heard])];
  return (
    <div class="setup">
      <h1>Set-up</h1>
      <section class="area">
        <h2>This phone</h2>
        <label>
          Who speaks here
          <input
            list="crew"
            defaultValue={settings.by}
            autocomplete="name"
            onChange={(e) => void settle({ by: e.currentTarget.value.trim() })}
          />
        </label>
        <datalist id="crew">
          {crew.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
        {heard.length > 0 && <p>Heard on this job: {[...new Set(heard)].join(', ')}.</p>}
        <label class="switch">
          <input
            type="checkbox"
            checked={settings.sun}
            onChange={(e) => void settle({ sun: e.currentTarget.checked })}
          />
          <span>Bright for the sun: black on white, also where the phone is set dark.</span>
        </label>
        {canListen() && (
          <label class="switch">
            <input
              type="checkbox"
              checked={settings.liveWords}
              onChange={(e) => void settle({ liveWords: e.currentTarget.checked })}
            />
            <span>Live words while speaking. The browser’s maker may hear them.</span>
          </label>
        )}
        <p>
          {isSecureContext && 'serviceWorker' in navigator
            ? 'Opens without signal, and keeps notes until they are sent.'
            : 'This address is not secure (https): no recording, and no opening without signal. Notes still wait here until they are sent.'}
        </p>
        {!canRecord() && <p>This browser cannot record sound. The keyboard’s own dictation works in the box.</p>}
      </section>
      {view && <JobForm key={view.job.id} id={view.job.id} job={view.job} title="This job" />}
      <PriceList />
      <Words />
      {view && <ReadAgain key={view.job.id} jobId={view.job.id} today={view.today} />}
      <details>
        <summary class="plain">Another job</summary>
        <JobForm id={null} job={null} title="New job" />
      </details>
    </div>
  );
}

/** What a phone shows before there is any job. */
export function FirstJob() {
  return (
    <div class="setup">
      <h1>The first job</h1>
      <p>Name it and say which areas it has. Everything else comes from what is said.</p>
      <JobForm id={null} job={null} title="New job" />
    </div>
  );
}
