import { countAt } from './counts.ts';
import { addDays, addMonths, daysBetween, firstOfMonth } from './days.ts';
import { ordinalAt } from './ordinals.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { happened, lookedBack, opensWithDeed, toldBehind } from './told.ts';
import { namesWhatCame, recordedOn, toldAround } from './toldOf.ts';
import { weekOpening } from './weekOf.ts';

export const MONTHS = new Map<string, number>(
  [
    'january jan enero',
    'february feb febrero',
    'march mar marzo',
    'april apr abril',
    'may mayo',
    'june jun junio',
    'july jul julio',
    'august aug agosto',
    'september sept sep septiembre',
    'october oct octubre',
    'november nov noviembre',
    'december dec diciembre',
  ].flatMap((names, month) => names.split(' ').map((name) => [name, month + 1] as const)),
);

export const two = (n: number) => String(n).padStart(2, '0');

/** The day in this year, or the next where it lies behind; null where the month has no such day. */
export function dateIn(talk: Talk, month: number, day: number, year?: number, past = false): string | null {
  const this_ = Number(talk.today.slice(0, 4));
  const at = (y: number) => `${y}-${two(month)}-${two(day)}`;
  const ahead = at(this_) >= talk.today;
  const date = year ? at(year) : past ? at(ahead ? this_ - 1 : this_) : at(ahead ? this_ : this_ + 1);
  const last = new Date(Date.UTC(Number(date.slice(0, 4)), month, 0)).getUTCDate();
  return month >= 1 && month <= 12 && day >= 1 && day <= last ? date : null;
}

/** The coming day of that number, in this month or a later one that has it. */
export function coming(talk: Talk, day: number): string {
  for (let ahead = 0; ; ahead++) {
    const first = addMonths(firstOfMonth(talk.today), ahead);
    const date = `${first.slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(first.slice(0, 4)), Number(first.slice(5, 7)), 0)).getUTCDate();
    if (date > talk.today && day <= last) return date;
  }
}

/** The last day of that number behind today. */
export function behind(talk: Talk, day: number): string {
  for (let back = 0; ; back--) {
    const date = `${addMonths(firstOfMonth(talk.today), back).slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)), 0)).getUTCDate();
    if (date < talk.today && day <= last) return date;
  }
}

/** What joins the first day of a span to its last. */
export const TO = /^(?:to|through|thru|till|until|til|-|–)$/;

const COMES_BACK = /\b(?:be|come|comes|coming|go|get|gets|\w+'(?:s|m|re)) back$/;
/** "Back on the 4th" and no more is somebody's return; "back on april 3rd we sealed it" is told. */
const isReturn = (talk: Talk, at: number) =>
  !/^[a-z]/.test(talk.word(at - 2)) &&
  !/ (?:i|we|he|she|they|it) (?:never )?(?:\w+ed|was|were|went|came|did|had|got|put|cut|set|saw)\b/.test(
    talk.join(at, at + 9),
  );

/** "Since the 10th", "back on april 3rd", "it went in on the 9th". */
export const isTold = (talk: Talk, at: number): boolean =>
  talk.word(at) === 'since' ||
  recordedOn(talk, at) ||
  /\b(?:(?:was|were) (?:promised|due)|had us down|(?:was|were) (?:supposed|meant) to (?:\w+ ){1,3})(?: ?(?:for|on|by|in))?$/.test(
    talk.join(at - 6, at + 1),
  ) ||
  (talk.word(at) === 'on' &&
    ((talk.word(at - 1) === 'back' && !COMES_BACK.test(talk.lead(at)) && !isReturn(talk, at)) ||
      talk.toldOfPast(at))) ||
  happened(talk, at + 1) ||
  opensWithDeed(talk, at + 1);

/** So near behind today that a deed with that day's number is told, not planned for the year to come. */
const JUST_GONE_DAYS = 90;
/** So near behind that its number alone is not said of the year to come: "paper says 8 june". */
const HARDLY_GONE_DAYS = 31;
/** Whether the day of a month that is said from `from` to `until` is one that has been. */
export function isPastDay(
  talk: Talk,
  { from, until }: { from: number; until: number },
  { month, day }: { month: number; day: number },
): boolean {
  if (isTold(talk, from - 1) || toldBehind(talk, from, until)) return true;
  const last = dateIn(talk, month, day, undefined, true);
  const gone = last === null ? Infinity : daysBetween(last, talk.today);
  if (gone > JUST_GONE_DAYS) return false;
  return (
    lookedBack(talk, from) ||
    namesWhatCame(talk, from, until) ||
    (gone <= HARDLY_GONE_DAYS && toldAround(talk, from, until))
  );
}

/** "22nd march", "first of july", "the 30th of april", "1st of the month". */
export const ordinalMonth: Rule = (talk, i) => {
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const from = talk.word(i - 1) === 'the' ? i - 1 : i;
  const of = talk.word(ordinal.until) === 'of';
  const at = of ? ordinal.until + 1 : ordinal.until;
  if (of && talk.says(at, ['the', 'month']) && isTold(talk, from - 1))
    return { from, until: at + 2, date: behind(talk, ordinal.day), past: true, rule: 'time/day-of-month' };
  if (of && talk.says(at, ['the', 'month']))
    return { from, until: at + 2, date: coming(talk, ordinal.day), rule: 'time/day-of-month' };
  if (of && (talk.says(at, ['this', 'month']) || talk.says(at, ['last', 'month']))) {
    const first = addMonths(firstOfMonth(talk.today), talk.word(at) === 'last' ? -1 : 0);
    const date = addDays(first, ordinal.day - 1);
    return { from, until: at + 2, date, ...(date < talk.today && { past: true }), rule: 'time/day-of-month' };
  }
  if (of && talk.says(at, ['next', 'month'])) {
    const date = addDays(addMonths(firstOfMonth(talk.today), 1), ordinal.day - 1);
    return { from, until: at + 2, date, rule: 'time/day-of-month' };
  }
  const month = MONTHS.get(talk.bare(at)) ?? sharedMonth(talk, at);
  if (month && !MONTHS.has(talk.bare(at)))
    return dayNamed(talk, { from, until: at }, { month, day: ordinal.day, year: undefined });
  // "The second may crack", "first march": only spelled with "of" are they days.
  if (!month || (!of && !ordinal.digits && /^(?:may|march|mar)$/.test(talk.word(at)))) return null;
  const year = /^20\d\d$/.test(talk.word(at + 1)) ? Number(talk.word(at + 1)) : undefined;
  return dayNamed(talk, { from, until: year ? at + 2 : at + 1 }, { month, day: ordinal.day, year });
};

const EITHER = /^(?:or|and|&|n)$/;

/** "3rd or 4th of june", "june 3rd or 4th": the month that is said with the other of the two. `at`: behind the first's or this one's ordinal. */
function sharedMonth(talk: Talk, at: number): number | undefined {
  if (EITHER.test(talk.word(at))) {
    const other = ordinalAt(talk, talk.word(at + 1) === 'the' ? at + 2 : at + 1);
    const of = other && talk.word(other.until) === 'of' ? other.until + 1 : other?.until;
    return of === undefined ? undefined : MONTHS.get(talk.bare(of));
  }
  const from = talk.word(at - 1).length === 2 ? at - 2 : at - 1;
  if (!EITHER.test(talk.word(from - 1)) || !talk.ends(at)) return undefined;
  for (const k of [from - 3, from - 4])
    if (MONTHS.has(talk.word(k)) && ordinalAt(talk, k + 1)?.until === from - 1) return MONTHS.get(talk.word(k));
  return undefined;
}

/** A day of a named month, told of or to come, or the week that opens with it. */
function dayNamed(
  talk: Talk,
  { from, until }: { from: number; until: number },
  { month, day, year }: { month: number; day: number; year: number | undefined },
): Found | null {
  const past = !year && isPastDay(talk, { from, until }, { month, day });
  const date = dateIn(talk, month, day, year, past);
  if (!date) return null;
  if (past) return { from, until, date, past, rule: 'time/month-day' };
  const week = weekOpening(talk, from);
  if (week === null) return { from, until, date, rule: 'time/month-day' };
  return { from: week, until, date, to: addDays(date, 6), relation: 'during', rule: 'time/week-of' };
}

/** "Aug 14", "14 August", "june third", "may 4th 2027". A month without a day is no date: "may need", "march the layout". */
export const monthDay: Rule = (talk, i) => {
  const month = MONTHS.get(talk.bare(i));
  if (month === undefined) return null;
  const at = talk.word(i + 1) === '.' ? i + 2 : i + 1;
  // "November the first".
  const after =
    ordinalAt(talk, talk.word(at) === 'the' ? at + 1 : at) ??
    saidDay(talk, i, at) ??
    (plainDay(talk, at) ? { day: Number(talk.word(at)), until: at + 1 } : null);
  const day = after?.day ?? (plainDay(talk, i - 1) ? Number(talk.word(i - 1)) : null);
  if (!day) return null;
  let until = after?.until ?? i + 1;
  const yearAt = talk.word(until) === ',' ? until + 1 : until;
  const year = /^20\d\d$/.test(talk.word(yearAt)) ? Number(talk.word(yearAt)) : undefined;
  if (year) until = yearAt + 1;
  const last = year ? null : lastOfSpan(talk, until, day);
  const found = dayNamed(talk, { from: after ? i : i - 1, until }, { month, day, year });
  if (!found || !last || found.to) return found;
  return { ...found, until: last.until, to: `${found.date.slice(0, 8)}${two(last.day)}`, relation: 'during' };
};

/** "June ten", "on march three we pour": a day's number in words, that nothing behind it is counted by. */
function saidDay(talk: Talk, i: number, at: number): { day: number; until: number } | null {
  const said = /^[a-z]/.test(talk.word(at)) ? countAt(talk, at) : null;
  if (!said || said.count > 31 || !talk.ends(said.until)) return null;
  const verb = /^(?:may|march|mar)$/.test(talk.word(i));
  return !verb || talk.opens(i) || /^(?:on|by|until|till|before|due)$/.test(talk.word(i - 1))
    ? { day: said.count, until: said.until }
    : null;
}

/** "Sept 18 to 20": the day that closes it in the same month. */
function lastOfSpan(talk: Talk, at: number, first: number): { day: number; until: number } | null {
  if (!TO.test(talk.word(at))) return null;
  const k = talk.word(at + 1) === 'the' ? at + 2 : at + 1;
  const last = ordinalAt(talk, k) ?? (plainDay(talk, k) ? { day: Number(talk.word(k)), until: k + 1 } : null);
  return last && last.day > first && last.day <= 31 && talk.ends(last.until) ? last : null;
}

/** A day's number that is not the start of a measure: `May 4`, never `may 4"` or `may 4 1/2`. */
const plainDay = (talk: Talk, i: number) =>
  /^\d{1,2}$/.test(talk.word(i)) &&
  !/^["'%/″′”’]$/.test(talk.word(i + 1)) &&
  talk.word(i - 1) !== '/' &&
  !/^(?:inch|inches|feet|foot|ft|in|more|of|x|boxes|bags)$/.test(talk.word(i + 1));
