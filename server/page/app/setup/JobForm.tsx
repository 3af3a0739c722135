import { useEffect, useRef } from 'preact/hooks';
import { v7 as newId } from 'uuid';
import type { NewJob } from '../../../http/api.ts';
import { wallTime } from '../kit/clock.ts';
import { saveJob } from '../kit/firm.ts';
import { say, wordsOf } from '../kit/model.ts';

/** A job's particulars: where, who, when. */
export function JobForm({ id, job, title }: { id: string | null; job: NewJob | null; title: string }) {
  const zone = job?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  const fields = useRef<HTMLFormElement>(null);
  // What was put back, or changed on another phone, is what the fields show.
  useEffect(() => fields.current?.reset(), [JSON.stringify(job)]);
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
        crew: names('crew'),
        builtYear: Number(text('builtYear')) || null,
        mailTo: names('mailTo'),
        mailAt: text('mailAt'),
      });
    } catch (error) {
      say(`Not kept. ${wordsOf(error)}`);
    }
  };
  return (
    <form
      ref={fields}
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
        <textarea
          name="areas"
          rows={Math.min(12, Math.max(4, (job?.areas.length ?? 0) + 1))}
          defaultValue={job?.areas.join('\n') ?? ''}
        />
      </label>
      <label>
        Crew, one a line
        <textarea name="crew" rows={3} defaultValue={job?.crew?.join('\n') ?? ''} />
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
