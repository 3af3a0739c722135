import { addDays, addMonths, firstOfMonth } from './days.ts';
import { holidayAt } from './holidays.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { happened } from './told.ts';

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

const ORDINALS =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );

const two = (n: number) => String(n).padStart(2, '0');

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
function coming(talk: Talk, day: number): string {
  for (let ahead = 0; ; ahead++) {
    const first = addMonths(firstOfMonth(talk.today), ahead);
    const date = `${first.slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(first.slice(0, 4)), Number(first.slice(5, 7)), 0)).getUTCDate();
    if (date > talk.today && day <= last) return date;
  }
}

/** The last day of that number behind today. */
function behind(talk: Talk, day: number): string {
  for (let back = 0; ; back--) {
    const date = `${addMonths(firstOfMonth(talk.today), back).slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)), 0)).getUTCDate();
    if (date < talk.today && day <= last) return date;
  }
}

const COMES_BACK = /\b(?:be|come|comes|coming|go|get|gets|\w+'(?:s|m|re)) back$/;
/** "Back on the 4th" and no more is somebody's return; "back on april 3rd we sealed it" is told. */
const isReturn = (talk: Talk, at: number) =>
  !/^[a-z]/.test(talk.word(at - 2)) &&
  !/ (?:i|we|he|she|they|it) (?:never )?(?:\w+ed|was|were|went|came|did|had|got|put|cut|set|saw)\b/.test(
    talk.join(at, at + 9),
  );

/** "Since the 10th", "back on april 3rd", "it went in on the 9th". */
const isTold = (talk: Talk, at: number) =>
  talk.word(at) === 'since' ||
  (talk.word(at) === 'on' &&
    ((talk.word(at - 1) === 'back' && !COMES_BACK.test(talk.lead(at)) && !isReturn(talk, at)) ||
      talk.toldOfPast(at))) ||
  happened(talk, at + 1);

/** `14th`, `fourteenth`, `twenty first`: the number and where its words end. */
function ordinalAt(talk: Talk, i: number): { day: number; until: number; digits: boolean } | null {
  const word = talk.word(i);
  if (/^\d{1,2}$/.test(word) && /^(?:st|nd|rd|th)$/.test(talk.word(i + 1)) && !talk.tokens[i + 1]!.spaced)
    return within({ day: Number(word), until: i + 2, digits: true });
  if (word === 'twenty' || word === 'thirty') {
    const at = talk.word(i + 1) === '-' ? i + 2 : i + 1;
    const unit = ORDINALS.indexOf(talk.word(at));
    if (unit >= 0 && unit < 9)
      return within({ day: (word === 'twenty' ? 20 : 30) + unit + 1, until: at + 1, digits: false });
  }
  if (word === 'thirtieth') return { day: 30, until: i + 1, digits: false };
  const at = ORDINALS.indexOf(word);
  return at >= 0 ? { day: at + 1, until: i + 1, digits: false } : null;
}

const within = <T extends { day: number }>(found: T) => (found.day >= 1 && found.day <= 31 ? found : null);

/** The ordinal at `i` as the coming day of the month; whether it is meant as one is the caller's to say. */
export function theOrdinal(talk: Talk, i: number): Found | null {
  const ordinal = ordinalAt(talk, i);
  return ordinal && { until: ordinal.until, date: coming(talk, ordinal.day), rule: 'time/day-of-month' };
}

const DAY_CUE = /^(?:by|on|before|b4|until|till|til|due|after|starting|through|thru)$/;
const SUBJECT = /^(?:we|they|he|she|i|he's|she's|they're|we're|i'm)$/;
/** What happens on a day rather than to a numbered thing: "tops land the fourteenth", "push it to the 28th". */
export const DATED_VERB =
  /\b(?:lands?|comes?|coming|ships?|delivers?|delivery|starts?|opens?|closes?|closing|move|push|bump|slide|reschedule|moved|pushed|bumped|inspection|final|deadline|has|shuts?|shut|closed|booked|arrives?|here|booked|scheduled|gone|back|leaves?|due)\b/;

/** "The fourteenth", "by the 1st", "the 30th of april", "the week of the 25th". */
export const dayOfMonth: Rule = (talk, i) => {
  if (talk.word(i - 1) !== 'the') return null;
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const { day, until, digits } = ordinal;
  // "I'll be back on the nineteenth to put it in": so high a number counts no floors and no coats.
  const plain = day >= 13 && /^(?:on|by|before|until|till|til)$/.test(talk.word(i - 2));
  if (!plain && !talk.ends(until)) return null;
  const weekOf = talk.says(i - 3, ['week', 'of', 'the']);
  const told = isTold(talk, i - 2);
  const dated = isNamed(talk, i - 2) || isInSpan(talk, i, until) || DAY_CUE.test(talk.word(i - 2));
  const cue = told || dated || SUBJECT.test(talk.word(until)) || DATED_VERB.test(talk.lead(i - 1));
  // A bare high number counts days; a bare low one counts windows, coats and steps.
  if (!weekOf && !cue && day < 13) return null;
  if (!weekOf && !told && !digits && day < 4 && !dated) return null;
  if (told) return { from: i - 1, until, date: behind(talk, day), past: true, rule: 'time/day-of-month' };
  const date = inItsMonth(talk, i - 1, day) ?? coming(talk, day);
  if (!weekOf) return { from: i - 1, until, date, rule: 'time/day-of-month' };
  const from = talk.word(i - 4) === 'the' ? i - 4 : i - 3;
  return { from, until, date, to: addDays(date, 6), relation: 'during', rule: 'time/week-of' };
};

/** "By 7th", "due 22nd": without its article, as typists and second-language speakers say it. A low one after "on" is a street or a floor. */
export const bareDayOfMonth: Rule = (talk, i) => {
  const ordinal = ordinalAt(talk, i);
  if (!ordinal?.digits || !talk.ends(ordinal.until)) return null;
  const cue = talk.word(i - 1);
  if (!/^(?:by|due|until|till|til|before)$/.test(cue) && !(cue === 'on' && ordinal.day >= 13)) return null;
  return { until: ordinal.until, date: coming(talk, ordinal.day), rule: 'time/day-of-month' };
};

/** "Labor day's the seventh": a day of the holiday's own month. */
function inItsMonth(talk: Talk, until: number, day: number): string | null {
  for (let k = until - 1; k > until - 5; k--) {
    const named = holidayAt(talk, k);
    if (named && (named.until === until || (named.until === until - 1 && talk.word(until - 1) === 'is')))
      return `${named.date.slice(0, 8)}${two(day)}`;
  }
  return null;
}

/** What joins the first day of a span to its last. */
export const TO = /^(?:to|through|thru|till|until|til|-|–)$/;

/** "From the 2nd to the 8th": either end of it. */
const isInSpan = (talk: Talk, i: number, until: number) =>
  (talk.word(i - 2) === 'from' && TO.test(talk.word(until))) ||
  (TO.test(talk.word(i - 2)) && [3, 4, 5, 6, 7].some((back) => talk.word(i - back) === 'from'));

/** "Labor day's the seventh", "friday is the 3rd". */
const isNamed = (talk: Talk, at: number) =>
  /day's$/.test(talk.word(at)) || (talk.word(at) === 'is' && /day$/.test(talk.word(at - 1)));

/** "22nd march", "first of july", "the 30th of april", "1st of the month". */
export const ordinalMonth: Rule = (talk, i) => {
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const from = talk.word(i - 1) === 'the' ? i - 1 : i;
  const of = talk.word(ordinal.until) === 'of';
  const at = of ? ordinal.until + 1 : ordinal.until;
  if (of && talk.says(at, ['the', 'month']))
    return { from, until: at + 2, date: coming(talk, ordinal.day), rule: 'time/day-of-month' };
  if (of && talk.says(at, ['next', 'month'])) {
    const date = addDays(addMonths(firstOfMonth(talk.today), 1), ordinal.day - 1);
    return { from, until: at + 2, date, rule: 'time/day-of-month' };
  }
  const month = MONTHS.get(talk.word(at));
  // "The second may crack", "first march": only spelled with "of" are they days.
  if (!month || (!of && !ordinal.digits && /^(?:may|march|mar)$/.test(talk.word(at)))) return null;
  const year = /^20\d\d$/.test(talk.word(at + 1)) ? Number(talk.word(at + 1)) : undefined;
  return dayNamed(talk, { from, until: year ? at + 2 : at + 1 }, { month, day: ordinal.day, year });
};

/** A day of a named month, told of or to come, or the week that opens with it. */
function dayNamed(
  talk: Talk,
  { from, until }: { from: number; until: number },
  { month, day, year }: { month: number; day: number; year: number | undefined },
): Found | null {
  const past = !year && isTold(talk, from - 1);
  const date = dateIn(talk, month, day, year, past);
  if (!date) return null;
  if (past) return { from, until, date, past, rule: 'time/month-day' };
  if (!isWeekOf(talk, from)) return { from, until, date, rule: 'time/month-day' };
  return { from: from - 2, until, date, to: addDays(date, 6), relation: 'during', rule: 'time/week-of' };
}

const isWeekOf = (talk: Talk, from: number) =>
  talk.word(from - 2) === 'week' && /^(?:of|commencing|beginning|starting)$/.test(talk.word(from - 1));

/** "Aug 14", "14 August", "june third", "may 4th 2027". A month without a day is no date: "may need", "march the layout". */
export const monthDay: Rule = (talk, i) => {
  const month = MONTHS.get(talk.word(i));
  if (month === undefined) return null;
  const at = talk.word(i + 1) === '.' ? i + 2 : i + 1;
  // "November the first".
  const after =
    ordinalAt(talk, talk.word(at) === 'the' ? at + 1 : at) ??
    (plainDay(talk, at) ? { day: Number(talk.word(at)), until: at + 1 } : null);
  const day = after?.day ?? (plainDay(talk, i - 1) ? Number(talk.word(i - 1)) : null);
  if (!day) return null;
  let until = after?.until ?? i + 1;
  const yearAt = talk.word(until) === ',' ? until + 1 : until;
  const year = /^20\d\d$/.test(talk.word(yearAt)) ? Number(talk.word(yearAt)) : undefined;
  if (year) until = yearAt + 1;
  return dayNamed(talk, { from: after ? i : i - 1, until }, { month, day, year });
};

/** A day's number that is not the start of a measure: `May 4`, never `may 4"` or `may 4 1/2`. */
const plainDay = (talk: Talk, i: number) =>
  /^\d{1,2}$/.test(talk.word(i)) &&
  !/^["'%/″′”’]$/.test(talk.word(i + 1)) &&
  talk.word(i - 1) !== '/' &&
  !/^(?:inch|inches|feet|foot|ft|in|more|of|x|boxes|bags)$/.test(talk.word(i + 1));
