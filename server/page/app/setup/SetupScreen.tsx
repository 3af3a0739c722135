import { v7 as newId } from 'uuid';
import type { JobView, NewJob } from '../../../http/api.ts';
import { wallTime } from '../kit/clock.ts';
import { useShown } from '../kit/hooks.ts';
import { saveJob, say, settle } from '../kit/model.ts';
import { canListen } from '../talk/liveWords.ts';
import { canRecord } from '../talk/recorder.ts';
import { PriceList } from './PriceList.tsx';

/** The job's particulars, and the choices of this phone. */
export function SetupScreen({ view }: { view: JobView | null }) {
  const { settings, talks } = useShown();
  const crew = [...new Set(talks.flatMap((talk) => talk.by ?? []))];
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
        {crew.length > 0 && <p>Heard on this job: {crew.join(', ')}.</p>}
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

function JobForm({ id, job, title }: { id: string | null; job: NewJob | null; title: string }) {
  const zone = job?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  const save = async (form: FormData) => {
    const text = (name: string) => String(form.get(name) ?? '').trim();
    const names = (name: string) =>
      text(name)
        .split(/[\n,]/)
        .map((n) => n.trim())
        .filter(Boolean);
    try {
      await saveJob(id ?? newId(), {
        name: text('name'),
        zone: text('zone'),
        start: text('start'),
        areas: names('areas'),
        builtYear: Number(text('builtYear')) || null,
        mailTo: names('mailTo'),
        mailAt: text('mailAt'),
      });
      say('Job kept.');
    } catch (error) {
      say(`Not kept. ${error instanceof Error ? error.message : 'Try again where there is signal.'}`);
    }
  };
  return (
    <form
      class="area"
      onSubmit={(e) => {
        e.preventDefault();
        void save(new FormData(e.currentTarget));
      }}
    >
      <h2>{title}</h2>
      <label>
        Name
        <input name="name" required defaultValue={job?.name ?? ''} />
      </label>
      <label>
        Areas, one a line
        <textarea name="areas" rows={4} defaultValue={job?.areas.join('\n') ?? ''} />
      </label>
      <div class="row">
        <label>
          Year built
          <input
            name="builtYear"
            inputMode="numeric"
            pattern="\d{4}"
            title="Four digits, or empty"
            defaultValue={job?.builtYear ? String(job.builtYear) : ''}
          />
        </label>
        <label>
          First day on site
          <input name="start" type="date" required defaultValue={job?.start ?? wallTime(zone).slice(0, 10)} />
        </label>
      </div>
      <label>
        The day’s e-mail goes to, one a line
        <textarea name="mailTo" rows={2} defaultValue={job?.mailTo.join('\n') ?? ''} />
      </label>
      <div class="row">
        <label>
          At
          <input name="mailAt" type="time" required defaultValue={job?.mailAt ?? '17:30'} />
        </label>
        <label>
          Time zone
          <input name="zone" required defaultValue={zone} />
        </label>
      </div>
      <button type="submit" class="primary">
        Keep
      </button>
    </form>
  );
}
