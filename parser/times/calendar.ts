import { addDays, addMonths } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';

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
function dateIn(talk: Talk, month: number, day: number, year?: number, past = false): string | null {
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
    const first = addMonths(`${talk.today.slice(0, 8)}01`, ahead);
    const date = `${first.slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(first.slice(0, 4)), Number(first.slice(5, 7)), 0)).getUTCDate();
    if (date > talk.today && day <= last) return date;
  }
}

/** The last day of that number behind today. */
function behind(talk: Talk, day: number): string {
  for (let back = 0; ; back--) {
    const date = `${addMonths(`${talk.today.slice(0, 8)}01`, back).slice(0, 8)}${two(day)}`;
    const last = new Date(Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)), 0)).getUTCDate();
    if (date < talk.today && day <= last) return date;
  }
}

const COMES_BACK = /\b(?:be|come|comes|coming|go|get|gets|\w+'(?:s|m|re)) back$/;
/** "Since the 10th", "back on april 3rd", "it went in on the 9th". */
const isTold = (talk: Talk, at: number) =>
  talk.word(at) === 'since' ||
  (talk.word(at) === 'on' &&
    ((talk.word(at - 1) === 'back' && !COMES_BACK.test(talk.lead(at))) || talk.toldOfPast(at)));

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
const DATED_VERB =
  /\b(?:lands?|comes?|coming|ships?|delivers?|delivery|starts?|opens?|closes?|closing|move|push|bump|slide|reschedule|moved|pushed|bumped|inspection|final|deadline|has|arrives?|here|booked|scheduled|gone|back|leaves?|due)\b/;

/** "The fourteenth", "by the 1st", "the 30th of april", "the week of the 25th". */
export const dayOfMonth: Rule = (talk, i) => {
  if (talk.word(i - 1) !== 'the') return null;
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const { day, until, digits } = ordinal;
  if (talk.word(until) === 'of') {
    const month = MONTHS.get(talk.word(until + 1));
    const date = month ? dateIn(talk, month, day) : null;
    if (date) return { from: i - 1, until: until + 2, date, rule: 'time/day-of-month' };
    if (talk.says(until, ['of', 'the', 'month']))
      return { from: i - 1, until: until + 3, date: coming(talk, day), rule: 'time/day-of-month' };
  }
  // "I'll be back on the nineteenth to put it in": so high a number counts no floors and no coats.
  const plain = day >= 13 && /^(?:on|by|before|until|till|til)$/.test(talk.word(i - 2));
  if (!plain && !talk.ends(until)) return null;
  const weekOf = talk.says(i - 3, ['week', 'of', 'the']);
  const told = isTold(talk, i - 2);
  const cue =
    told || DAY_CUE.test(talk.word(i - 2)) || SUBJECT.test(talk.word(until)) || DATED_VERB.test(talk.lead(i - 1));
  // A bare high number counts days; a bare low one counts windows, coats and steps.
  if (!weekOf && !cue && day < 13) return null;
  if (!weekOf && !told && !digits && day < 4 && !DAY_CUE.test(talk.word(i - 2))) return null;
  if (told) return { from: i - 1, until, date: behind(talk, day), past: true, rule: 'time/day-of-month' };
  const date = coming(talk, day);
  if (!weekOf) return { from: i - 1, until, date, rule: 'time/day-of-month' };
  const from = talk.word(i - 4) === 'the' ? i - 4 : i - 3;
  return { from, until, date, to: addDays(date, 6), relation: 'during', rule: 'time/week-of' };
};

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
  const from = after ? i : i - 1;
  const past = !year && isTold(talk, from - 1);
  const date = dateIn(talk, month, day, year, past);
  if (!date) return null;
  if (past) return { from, until, date, past, rule: 'time/month-day' };
  if (!talk.says(from - 2, ['week', 'of'])) return { from, until, date, rule: 'time/month-day' };
  return { from: from - 2, until, date, to: addDays(date, 6), relation: 'during', rule: 'time/week-of' };
};

/** A day's number that is not the start of a measure: `May 4`, never `may 4"` or `may 4 1/2`. */
const plainDay = (talk: Talk, i: number) =>
  /^\d{1,2}$/.test(talk.word(i)) &&
  !/^["'%/″′”’]$/.test(talk.word(i + 1)) &&
  talk.word(i - 1) !== '/' &&
  !/^(?:inch|inches|feet|foot|ft|in|more|of|x|boxes|bags)$/.test(talk.word(i + 1));

/** `2026-11-11`, `11-11-26`: three figures and two hyphens, the year with four digits or after a month and a day. */
function dashDate(talk: Talk, i: number): Found | null {
  const figures = [i, i + 2, i + 4].map((k) => talk.word(k));
  if (talk.word(i + 1) !== '-' || talk.word(i + 3) !== '-' || talk.tokens[i + 1]!.spaced || talk.tokens[i + 3]!.spaced)
    return null;
  const iso = /^20\d\d \d\d \d\d$/.test(figures.join(' '));
  if (!iso && !/^\d{1,2} \d{1,2} (?:20)?\d\d$/.test(figures.join(' '))) return null;
  const [a, b, c] = figures.map(Number) as [number, number, number];
  const date = iso ? dateIn(talk, b, c, a) : dateIn(talk, a, b, 2000 + (c % 100));
  return date ? { until: i + 5, date, rule: 'time/dashed' } : null;
}

const STRONG_CUE =
  /^(?:by|due|until|till|til|lands?|arrives?|ships?|date|dated|starting|delivers?|thru|comes?|closes?)$/;
/** `9-14` behind "ships", "due", "by": month and day. */
function shortDash(talk: Talk, i: number): Found | null {
  const [a, b] = [talk.word(i), talk.word(i + 2)];
  if (!/^\d{1,2}$/.test(a) || talk.word(i + 1) !== '-' || !/^\d{1,2}$/.test(b)) return null;
  if (talk.tokens[i + 1]!.spaced || !/^(?:due|ships?|lands?|arrives?|closes?|dated?)$/.test(talk.word(i - 1)))
    return null;
  const date = Number(b) > Number(a) && talk.ends(i + 3) ? dateIn(talk, Number(a), Number(b)) : null;
  return date ? { until: i + 3, date, rule: 'time/dashed' } : null;
}

const WEAK_CUE = /^(?:on|before|b4|after|is|for|up|in|to|from)$/;

/** `6/1`, `9/3/26`: a slash is a fraction first, so a date needs a cue before it, or a year. */
export const slashDate: Rule = (talk, i) => {
  const dashed = dashDate(talk, i) ?? shortDash(talk, i);
  if (dashed) return dashed;
  const [a, mark, b] = [talk.tokens[i], talk.tokens[i + 1], talk.tokens[i + 2]];
  if (a?.kind !== 'number' || mark?.text !== '/' || b?.kind !== 'number') return null;
  if (!/^\d{1,2}$/.test(a.text) || !/^\d{1,2}$/.test(b.text)) return null;
  const yearAt = talk.tokens[i + 4];
  const year =
    talk.word(i + 3) === '/' && yearAt && /^(?:20)?\d\d$/.test(yearAt.text)
      ? 2000 + (Number(yearAt.text) % 100)
      : undefined;
  const until = year ? i + 5 : i + 3;
  // "Pitch is 6/12": a roof's rise, never June.
  if (/\b(?:pitch|slope|rise)\b/.test(talk.lead(i))) return null;
  // "31/3": more than twelve months there are not, so the day stands first.
  const dayFirst = Number(a.text) > 12 && Number(a.text) <= 31 && Number(b.text) <= 12;
  if (!year && !(dayFirst && !/^(?:2|4|8|16)$/.test(b.text) && talk.ends(until))) {
    const fraction = /^(?:2|4|8|16|32|64)$/.test(b.text) || (b.text === '3' && /^1[024]$/.test(a.text));
    const strong = STRONG_CUE.test(talk.word(i - 1)) || /\b(?:due|shows? up|lands?)\b/.test(talk.lead(i));
    const dated = DATED_VERB.test(talk.lead(i));
    // No rule is ruled in 15ths or 22nds: "final insp 7/22" needs no cue.
    const bare =
      Number(b.text) > 12 &&
      !fraction &&
      !/^[\d/"'%-]/.test(talk.word(i - 1)) &&
      !/^(?:["'%/-]|amps?$)/.test(talk.word(until));
    if (bare) {
      const date = dateIn(talk, Number(a.text), Number(b.text));
      return date ? { until, date, rule: 'time/slash' } : null;
    }
    // "6/20 or 6/22".
    const second = /^(?:or|and|,)$/.test(talk.word(i - 1)) && talk.word(i - 3) === '/' && !fraction;
    if (!strong && !second && !(WEAK_CUE.test(talk.word(i - 1)) && (dated || !fraction))) return null;
    if (!talk.ends(until)) return null;
  }
  // "By 14/11": no month is a fourteenth one, so the day stands first.
  const [month, day] = (dayFirst ? [b.text, a.text] : [a.text, b.text]).map(Number) as [number, number];
  const date = dateIn(talk, month, day, year);
  return date ? { until, date, rule: 'time/slash' } : null;
};
