import { countAt } from './counts.ts';
import { addDays, addMonths } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { SURE_WAIT } from './waits.ts';
import { WEEKDAYS } from './weekdayNames.ts';

const DAYS_IN: ReadonlyMap<string, number> = new Map([
  ['day', 1],
  ['night', 1],
  ['week', 7],
]);
const TIMED = new Map([
  ["day's", 1],
  ["week's", 7],
  ["fortnight's", 14],
]);

const AGO: ReadonlyMap<string, (today: string) => string> = new Map([
  ['day', (today) => addDays(today, -1)],
  ['week', (today) => addDays(today, -7)],
  ['fortnight', (today) => addDays(today, -14)],
  ['month', (today) => addMonths(today, -1)],
  ['year', (today) => addMonths(today, -12)],
]);

/** What is meant by a few. Common practice, no source. */
const FEW = 3;

/** "In a few days", "give it a few days", "a few weeks ago". */
function aFew(talk: Talk, i: number, until: number, days: number): Found | null {
  if (/^(?:ago|back)$/.test(talk.word(until)))
    return { until: until + 1, date: addDays(talk.today, -days), past: true, rule: 'time/ago' };
  const out = /^(?:out|away)$/.test(talk.word(until)) ? 1 : talk.says(until, ['from', 'now']) ? 2 : 0;
  const date = addDays(talk.today, days);
  if (talk.word(i - 1) === 'in' || out)
    return {
      from: talk.word(i - 1) === 'in' ? i - 1 : i,
      until: until + out,
      date,
      relation: 'on',
      rule: 'time/in-days',
    };
  if (!waits(talk, i) || talk.toldOfPast(i)) return null;
  return { until, date, relation: 'notBefore', hours: 24 * days, rule: 'time/wait' };
}

const waits = (talk: Talk, i: number) =>
  SURE_WAIT.test(talk.lead(i)) || /\b(?:give|needs?|wants?)\b/.test(talk.lead(i));

/** Behind these the unit has its count or its article. */
const NOT_OPEN = /^(?:an?|one|the|half|last|every|per|each|other)$/;

/** "In a fortnight", "in a week's time", "give it another day". */
export const inSomeTime: Rule = (talk, i) => {
  const ago =
    /^an?$/.test(talk.word(i)) && /^(?:ago|back)$/.test(talk.word(i + 2)) ? AGO.get(talk.word(i + 1)) : undefined;
  if (ago && !WEEKDAYS.has(talk.word(i + 3)))
    return { until: talk.word(i + 3) === 'today' ? i + 4 : i + 3, date: ago(talk.today), past: true, rule: 'time/ago' };
  // "Week ago", "few days back": phones swallow the article.
  const bare =
    talk.word(i + 1) === 'ago' && !NOT_OPEN.test(talk.word(i - 1)) && !countAt(talk, i - 1)
      ? AGO.get(talk.word(i))
      : undefined;
  if (bare && !WEEKDAYS.has(talk.word(i + 2)))
    return { until: i + 2, date: bare(talk.today), past: true, rule: 'time/ago' };
  const nights = countAt(talk, i);
  if (nights && talk.word(nights.until) === 'nights' && /^(?:ago|back)$/.test(talk.word(nights.until + 1)))
    return { until: nights.until + 2, date: addDays(talk.today, -nights.count), past: true, rule: 'time/ago' };
  // "Give it two nights".
  if (nights && talk.word(nights.until) === 'nights' && waits(talk, i) && !talk.toldOfPast(i))
    return {
      until: nights.until + 1,
      date: addDays(talk.today, nights.count),
      relation: 'notBefore',
      hours: 24 * nights.count,
      rule: 'time/wait',
    };
  const bareFew = talk.word(i) === 'few' && /^(?:days|weeks) (?:ago|back|out|away)$/.test(talk.join(i + 1, i + 3));
  if (bareFew) return aFew(talk, i, i + 2, FEW * (talk.word(i + 1) === 'weeks' ? 7 : 1));
  const fewAt = talk.word(i) === 'a' && talk.word(i + 1) === 'few' ? i + 2 : 0;
  const few = fewAt ? { days: 1, weeks: 7 }[talk.word(fewAt)] : undefined;
  if (few) return aFew(talk, i, fewAt + 1, FEW * few);
  if (talk.says(i, ['a', 'fortnight', 'from', 'now']) || talk.says(i, ['a', 'fortnight', 'from', 'today']))
    return { until: i + 4, date: addDays(talk.today, 14), relation: 'on', rule: 'time/in-days' };
  if (talk.says(i, ['in', 'a', 'month', 'or', 'so']))
    return { until: i + 5, date: addMonths(talk.today, 1), relation: 'on', rule: 'time/in-days' };
  if (talk.says(i, ['in', 'a', 'week']) && !talk.quantityAt(i + 1) && talk.ends(i + 3))
    return { until: i + 3, date: addDays(talk.today, 7), relation: 'on', rule: 'time/in-days' };
  if (/^(?:in|inside|within)$/.test(talk.word(i)) && talk.says(i + 1, ['a', 'fortnight']))
    return { until: i + 3, date: addDays(talk.today, 14), relation: 'on', rule: 'time/in-days' };
  const days = talk.says(i, ['in', 'a']) && talk.word(i + 3) === 'time' ? TIMED.get(talk.word(i + 2)) : undefined;
  if (days) return { until: i + 4, date: addDays(talk.today, days), relation: 'on', rule: 'time/in-days' };
  const again = talk.word(i) === 'another' || (talk.word(i) === 'a' && talk.word(i - 1) === 'wait');
  const more = again ? DAYS_IN.get(talk.word(i + 1)) : undefined;
  const opens = talk.opens(i) && /^(?:for|on|until|till|til|before)$/.test(talk.word(i + 2));
  if (
    !more ||
    !(opens || SURE_WAIT.test(talk.lead(i)) || /\b(?:give|needs?|for|wants?|be|takes?)\b/.test(talk.lead(i)))
  )
    return null;
  return { until: i + 2, date: addDays(talk.today, more), relation: 'notBefore', hours: 24 * more, rule: 'time/wait' };
};

/** "In a day or two", "give it a day or so". */
export const dayOrTwo: Rule = (talk, i) => {
  if (!/^an?$/.test(talk.word(i)) || talk.word(i + 2) !== 'or' || !/^(?:two|three|so)$/.test(talk.word(i + 3)))
    return null;
  const unit = talk.word(i + 1) === 'night' ? undefined : DAYS_IN.get(talk.word(i + 1));
  const inDays = talk.word(i - 1) === 'in';
  if (!unit || !(inDays || SURE_WAIT.test(talk.lead(i)) || /\bgive\b/.test(talk.lead(i)))) return null;
  const most = { two: 2, three: 3 }[talk.word(i + 3)] ?? 1;
  if (!inDays)
    return {
      until: i + 4,
      date: addDays(talk.today, unit * most),
      relation: 'notBefore',
      hours: 24 * unit * most,
      rule: 'time/wait',
    };
  const to = most > 1 ? { to: addDays(talk.today, unit * most) } : {};
  return { from: i - 1, until: i + 4, date: addDays(talk.today, unit), ...to, rule: 'time/in-days' };
};
