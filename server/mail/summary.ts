import { lengthText } from '../../parser/quantities/format.ts';
import type { BringList } from '../jobs/bring.ts';
import { isLive } from '../jobs/live.ts';
import type { Item, Job, JobState } from '../jobs/types.ts';
import { checkText, decided, itemText, orderText } from '../talk/index.ts';
import {
  areaOf,
  cautionWords,
  closedTask,
  daysSpelt,
  isReady,
  moneyWords,
  perhapsToBuy,
  shortDay,
  waitWords,
} from '../talk/wording.ts';

/** A day's mail: subject, HTML and plain text made from the same sections. */
export interface Summary {
  subject: string;
  html: string;
  text: string;
}

interface Section {
  title: string;
  lines: string[];
  /** Second line under each, where there is one: the working, the words. */
  under?: (string | null)[];
}

/** What happened on a day and what comes next, counts first, so that the first line on a locked phone says enough. `untyped`: recordings of the day that nobody has typed. */
export function summaryOf(job: Job, state: JobState, day: string, bring?: BringList, untyped = 0): Summary {
  const log = state.days.find((d) => d.day === day);
  const told = (item: Item) => `${item.number}. ${itemText(item, day)}`;
  const open = state.items.filter(isLive);
  const ready = open.filter((i) => isReady(i, day));
  const later = open.filter((i) => !isReady(i, day));
  const buy = state.order.filter((l) => l.state === 'to buy');
  const perhaps = state.order.filter((l) => l.state === 'unsure');
  const coming = state.order.filter((l) => l.state === 'ordered');
  const found = state.items.filter((i) => i.problem !== null && i.openedOn === day && isLive(i));
  const closed = state.items.filter((i) => i.closedOn === day);
  const unsure = state.items.filter((i) => i.state === 'unsure' && i.openedOn === day);
  const counts = `${closed.length} done, ${open.length} open, ${buy.length} to buy`;
  const sections: Section[] = [
    { title: 'Done today', lines: closed.map((i) => told({ ...i, task: closedTask(i) })) },
    { title: 'Found today', lines: found.map(told) },
    {
      title: 'Measured today',
      lines: state.measurements
        .filter((m) => m.on === day)
        .map(
          (m) => `${m.of}: ${lengthText(m.exact, m.unit)}${areaOf({ task: m.of, area: m.area }) ? ` (${m.area})` : ''}`,
        ),
    },
    { title: 'Decided today', lines: state.decisions.filter((d) => d.on === day).map((d) => decided(d.what)) },
    {
      title: 'Spent today',
      lines: state.spending
        .filter((s) => s.on === day)
        .map((s) => `${moneyWords(s.amount, s.currency)}${s.for ? ` for ${s.for}` : ''}`),
    },
    { title: 'Questions', lines: state.questions.slice(0, 5).map((q) => q.ask) },
    {
      title: 'Not sure of',
      lines: unsure.map(told),
      under: unsure.map((i) => i.history[0]?.words ?? null),
    },
    { title: 'Ready to work on', lines: ready.map(told) },
    {
      title: 'For later',
      lines: later.map(told),
      under: later.map((i) => waitWords(i.waitingFor)),
    },
    {
      title: 'To buy',
      lines: buy.map((l) => (l.item.includes(l.counter) ? orderText(l) : `${orderText(l)} (${l.counter})`)),
      under: buy.map((l) => l.because || null),
    },
    { title: perhapsToBuy, lines: perhaps.map(orderText), under: perhaps.map((l) => l.because || null) },
    { title: 'On order', lines: coming.map(orderText) },
    {
      title: 'Bring',
      lines: [loadWords('Tools', bring?.tools), loadWords('Small parts', bring?.parts)].filter((l) => l !== ''),
    },
    { title: 'Fit checks', lines: state.checks.map(checkText) },
    {
      title: 'Take care',
      lines: state.cautions.map(
        (c) => `${cautionWords(c.text)}${c.items.length ? ` (no. ${c.items.join(', ')})` : ''}`,
      ),
      under: state.cautions.map((c) => c.source),
    },
  ].filter((s) => s.lines.length > 0);
  if (untyped)
    sections.unshift({
      title: 'Recordings to type',
      lines: [`${untyped} of this day. What was said in them is in none of the lines below.`],
    });
  if (!log) sections.unshift({ title: 'Today', lines: ['Nothing was said on this day.'] });
  for (const s of sections) {
    s.lines = s.lines.map((line) => daysSpelt(line));
    s.under = s.under?.map((u) => u && daysSpelt(u));
  }
  return {
    subject: `${job.name}, ${shortDay(day)}: ${counts}`,
    html: html(job, shortDay(day), counts, sections),
    text: text(job, shortDay(day), counts, sections),
  };
}

/** `Tools: caulk gun (no. 1, 4), utility knife (no. 2)`; empty where there are none. */
const loadWords = (title: string, things: BringList['tools'] = []): string =>
  things.length ? `${title}: ${things.map(({ what, items }) => `${what} (no. ${items.join(', ')})`).join(', ')}` : '';

const COLUMNS = 72;

const FOOT =
  'Written from the notes of the day by fixed rules. What looks wrong is put right on the phone page. Local code and the licensed trade decide.';

function text(job: Job, day: string, counts: string, sections: readonly Section[]): string {
  const out = [`${job.name}`, `${day}: ${counts}`, ''];
  for (const s of sections) {
    out.push(s.title.toUpperCase());
    s.lines.forEach((line, k) => {
      out.push(...wrap(line, '- ', '  '));
      const under = s.under?.[k];
      if (under) out.push(...wrap(under, '    ', '    '));
    });
    out.push('');
  }
  out.push(...wrap(FOOT, '', ''));
  return `${out.join('\n')}\n`;
}

function wrap(line: string, first: string, rest: string): string[] {
  const out: string[] = [];
  let now = first;
  for (const word of line.split(/\s+/)) {
    if (now.length + word.length + 1 > COLUMNS && now.trim()) {
      out.push(now.trimEnd());
      now = rest;
    }
    now += `${word} `;
  }
  out.push(now.trimEnd());
  return out;
}

const escapeHtml = (s: string) =>
  s.replace(/[&<>"']/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' })[c]!);

/** One column, borders and words only: mail programs recolour what they like. */
function html(job: Job, day: string, counts: string, sections: readonly Section[]): string {
  const body = sections
    .map(
      (s) =>
        `<h2 style="font-size:16px;margin:20px 0 4px;border-bottom:2px solid #0f5f5a;padding-bottom:2px">${escapeHtml(s.title)}${s.lines.length > 1 ? ` (${s.lines.length})` : ''}</h2><ul style="margin:0;padding:0;list-style:none">${s.lines
          .map(
            (line, k) =>
              `<li style="padding:5px 0;border-bottom:1px solid #888">${escapeHtml(line)}${s.under?.[k] ? `<br><small>${escapeHtml(s.under[k]!)}</small>` : ''}</li>`,
          )
          .join('')}</ul>`,
    )
    .join('');
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="color-scheme" content="light dark"><meta name="supported-color-schemes" content="light dark"><title>${escapeHtml(job.name)}</title></head><body style="font-family:Georgia,serif;font-size:16px;line-height:1.4;max-width:600px;margin:0 auto;padding:12px"><h1 style="font-size:20px;margin:0">${escapeHtml(job.name)}</h1><p style="margin:2px 0 0"><strong>${day}: ${counts}</strong></p>${body}<p style="margin-top:24px;border-top:1px solid #888;padding-top:6px"><small>${FOOT}</small></p></body></html>`;
}
