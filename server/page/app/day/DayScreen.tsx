import { useEffect, useState } from 'preact/hooks';
import type { JobView, SummaryView } from '../../../http/api.ts';
import { byArea } from '../../../talk/groups.ts';
import { closedTask, moneyWords, shortDay } from '../../../talk/wording.ts';
import { letterPath, sendSummaryCall, summaryCall } from '../kit/calls.ts';
import { clockOf, dayWords } from '../kit/clock.ts';
import { say } from '../kit/model.ts';
import { capital } from '../kit/words.ts';
import { JobSoFar, Progress } from '../list/pictures.tsx';

/** What a day brought, and the e-mail that tells of it. */
export function DayScreen({ view }: { view: JobView }) {
  const logged = view.state.days.map((d) => d.day);
  const ended = view.state.items.flatMap((item) => item.closedOn ?? []);
  const days = [...new Set([view.today, ...logged, ...ended])].sort().reverse();
  const [day, setDay] = useState(view.today);
  const log = view.state.days.find((d) => d.day === day);
  const spent = view.state.spending
    .filter((s) => s.on === day)
    .map((s) => moneyWords(s.amount, s.currency))
    .join(' and ');
  // As in the e-mail: also what was ticked and never told, and not what was opened again.
  const done = view.state.items.filter((item) => item.closedOn === day);
  const decided = view.state.decisions.filter((d) => d.on === day).map((d) => d.what);
  return (
    <div class="day">
      <div class="title-row">
        <h1>Day</h1>
        <label>
          <span class="hidden">Which day</span>
          <select value={day} onChange={(e) => setDay(e.currentTarget.value)}>
            {days.map((d) => (
              <option key={d} value={d}>
                {shortDay(d)}
                {d === view.today ? ', today' : ''}
              </option>
            ))}
          </select>
        </label>
      </div>
      {!log && <p class="empty">Nothing was said {dayWords(day, view.today)}.</p>}
      {log && (
        <p>
          {log.notes} {log.notes === 1 ? 'note' : 'notes'}
          {spent && `, ${spent} spent`}
        </p>
      )}
      <Told title="Done" lines={done.map((item) => `${item.number}. ${closedTask(item)}`)} />
      <Told title="Found" lines={log?.found ?? []} />
      <Told title="Bought" lines={log?.bought ?? []} />
      <Told title="Decided" lines={decided} />
      <HowFar view={view} />
      <Letter key={day} jobId={view.job.id} day={day} asOf={view.state.asOf} today={view.today} />
    </div>
  );
}

/** The whole job and each of its areas, as pictures. */
function HowFar({ view }: { view: JobView }) {
  const { items } = view.state;
  if (!items.length) return null;
  return (
    <section class="area">
      <h2>How far the job is</h2>
      <JobSoFar items={items} start={view.job.start} today={view.today} />
      <ul class="plain-list">
        {byArea(view.job.areas, items).map(([area, here]) => (
          <li key={area} class="title-row">
            <span>{capital(area)}</span>
            <Progress items={here} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Told({ title, lines }: { title: string; lines: readonly string[] }) {
  if (!lines.length) return null;
  return (
    <section class="area">
      <h2>{title}</h2>
      <ul class="plain-list">
        {[...new Set(lines)].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** The e-mail as it would go out. Only the server can write it, so it is not there without signal. */
function Letter({ jobId, day, asOf, today }: { jobId: string; day: string; asOf: string; today: string }) {
  const [summary, setSummary] = useState<SummaryView | null>(null);
  const [trouble, setTrouble] = useState(false);
  const [sending, setSending] = useState(false);
  useEffect(() => {
    let current = true;
    summaryCall(jobId, day).then(
      (s) => current && setSummary(s),
      () => current && setTrouble(true),
    );
    return () => {
      current = false;
    };
  }, [jobId, day, asOf]);

  const send = async () => {
    setSending(true);
    try {
      const sent = await sendSummaryCall(jobId, day);
      say(sent.sent === 'smtp' ? `Sent to ${sent.to.join(', ')}.` : `No mail server is set: written to ${sent.path}.`);
    } catch (error) {
      say(`Not sent. ${error instanceof Error ? error.message : ''}`);
    }
    setSending(false);
  };

  if (!summary)
    return (
      <p class="empty">
        {trouble ? 'The e-mail is written by the server, which does not answer now.' : 'Writing the e-mail…'}
      </p>
    );
  return (
    <section class="letter area">
      <h2>E-mail</h2>
      <p>
        <b>{summary.subject}</b>
      </p>
      <p>
        {summary.delivery.to.length
          ? `To ${summary.delivery.to.join(', ')}, ${summary.delivery.at}. `
          : 'Nobody gets it yet: name someone in set-up. '}
        {summary.delivery.note}
      </p>
      {summary.delivery.last && <Fared last={summary.delivery.last} today={today} />}
      <iframe class="letter-text" title="The e-mail" sandbox="" src={letterPath(jobId, day)} key={asOf} />
      <button type="button" class="primary" disabled={sending} onClick={() => void send()}>
        {summary.delivery.way === 'smtp' ? 'Send it now' : 'Write it to a file now'}
      </button>
    </section>
  );
}

/** Whether the mail of these words is on its way. */
function Fared({ last, today }: { last: NonNullable<SummaryView['delivery']['last']>; today: string }) {
  if (last.state === 'sent') return <p>This one has gone out.</p>;
  return (
    <p class="problem">
      {last.state === 'due' && last.nextAt
        ? `Not taken by the mail server yet; tried again ${dayWords(last.nextAt.slice(0, 10), today)} at ${clockOf(last.nextAt)}.`
        : 'Given up: the mail server will not take it. Put the cause right, then send it by hand.'}{' '}
      {last.failure}
    </p>
  );
}
