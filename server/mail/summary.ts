import Fraction from 'fraction.js';
import { plain } from '../../parser/quantities/format.ts';
import type { BringList } from '../jobs/bring.ts';
import type { Item, Job, JobState } from '../jobs/types.ts';
import { checkText, itemText, orderText } from '../talk/index.ts';

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

const live = (item: Item) => item.state === 'open' || item.state === 'waiting';

/** What happened on a day and what comes next, counts first, so that the first line on a locked phone says enough. */
export function summaryOf(job: Job, state: JobState, day: string, bring?: BringList): Summary {
  const log = state.days.find((d) => d.day === day);
  const open = state.items.filter(live);
  const ready = open.filter((i) => i.state === 'open');
  const waiting = open.filter((i) => i.state === 'waiting');
  const buy = state.order.filter((l) => l.state === 'to buy');
  const found = state.items.filter((i) => i.problem !== null && i.openedOn === day && live(i));
  const closed = state.items.filter((i) => i.closedOn === day);
  const counts = `${closed.length} done, ${open.length} open, ${buy.length} to buy`;
  const sections: Section[] = [
    { title: 'Done today', lines: closed.map((i) => `${i.number}. ${itemText({ ...i, readyOn: null, due: null })}`) },
    { title: 'Found today', lines: found.map((i) => `${i.number}. ${itemText(i)}`) },
    { title: 'To buy', lines: buy.map(orderText), under: buy.map((l) => l.because || null) },
    { title: 'Ready to work on', lines: ready.map((i) => `${i.number}. ${itemText(i)}`) },
    {
      title: 'Bring',
      lines: [loadWords('Tools', bring?.tools), loadWords('Small parts', bring?.parts)].filter((l) => l !== ''),
    },
    {
      title: 'Waiting',
      lines: waiting.map((i) => `${i.number}. ${i.task}${i.area ? ` (${i.area})` : ''}, ready ${i.readyOn}`),
      under: waiting.map((i) => (i.waitingFor ? `waits for: ${i.waitingFor}` : null)),
    },
    {
      title: 'Measured today',
      lines: state.measurements
        .filter((m) => m.on === day)
        .map((m) => `${m.of}: ${plain(new Fraction(m.exact))} ${m.unit ?? ''}`.trim()),
    },
    {
      title: 'Fit checks',
      lines: state.checks.map(checkText),
    },
    { title: 'Questions', lines: state.questions.slice(0, 5).map((q) => q.ask) },
    { title: 'Take care', lines: state.cautions.map((c) => c.text), under: state.cautions.map((c) => c.source) },
    { title: 'Spent', lines: log && log.spent > 0 ? [`${log.spent.toFixed(2)}`] : [] },
  ].filter((s) => s.lines.length > 0);
  return {
    subject: `${job.name}, ${day}: ${counts}`,
    html: html(job, day, counts, sections),
    text: text(job, day, counts, sections),
  };
}

/** `Tools: caulk gun (no. 1, 4), utility knife (no. 2)`; empty where there are none. */
const loadWords = (title: string, things: BringList['tools'] = []): string =>
  things.length ? `${title}: ${things.map(({ what, items }) => `${what} (no. ${items.join(', ')})`).join(', ')}` : '';

const COLUMNS = 72;

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
  out.push(
    ...wrap(
      'Read from your notes by rule. What looks wrong is put right on the page; local code and the licensed trade decide.',
      '',
      '',
    ),
  );
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
        `<h2 style="font-size:16px;margin:20px 0 4px;border-bottom:2px solid #0f5f5a;padding-bottom:2px">${escapeHtml(s.title)} (${s.lines.length})</h2><ul style="margin:0;padding-left:20px">${s.lines
          .map(
            (line, k) =>
              `<li style="margin:4px 0">${escapeHtml(line)}${s.under?.[k] ? `<br><small>${escapeHtml(s.under[k]!)}</small>` : ''}</li>`,
          )
          .join('')}</ul>`,
    )
    .join('');
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="color-scheme" content="light dark"><meta name="supported-color-schemes" content="light dark"><title>${escapeHtml(job.name)}</title></head><body style="font-family:Georgia,serif;font-size:16px;line-height:1.4;max-width:600px;margin:0 auto;padding:12px"><h1 style="font-size:20px;margin:0">${escapeHtml(job.name)}</h1><p style="margin:2px 0 0"><strong>${day}: ${counts}</strong></p>${body}<p style="margin-top:24px;border-top:1px solid #888;padding-top:6px"><small>Read from your notes by rule. What looks wrong is put right on the page; local code and the licensed trade decide.</small></p></body></html>`;
}
