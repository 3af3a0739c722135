import { behind, coming, isTold, TO, two } from './calendar.ts';
import { hourFrom } from './clock.ts';
import { addDays } from './days.ts';
import { holidayAt } from './holidays.ts';
import { type Ordinal, ordinalAt } from './ordinals.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { toldBehind } from './told.ts';
import { endsWeek, weekOpening } from './weekOf.ts';

/** The ordinal at `i` as the coming day of the month; whether it is meant as one is the caller's to say. */
export function theOrdinal(talk: Talk, i: number): Found | null {
  const ordinal = ordinalAt(talk, i);
  return ordinal && { until: ordinal.until, date: coming(talk, ordinal.day), rule: 'time/day-of-month' };
}

const DAY_CUE = /^(?:by|on|come|before|b4|until|till|til|due|after|starting|through|thru)$/;
const SUBJECT = /^(?:we|they|he|she|i|he's|she's|they're|we're|i'm)$/;
/** What happens on a day rather than to a numbered thing: "tops land the fourteenth", "push it to the 28th". */
export const DATED_VERB =
  /\b(?:lands?|comes?|coming|pouring|starting|leaving|opening|ships?|delivers?|delivery|starts?|opens?|closes?|closing|move|push|bump|book|schedule|slide|reschedule|moved|pushed|bumped|slips?|slipped|shift(?:s|ed)?|inspection|final|deadline|has|shuts?|shut|closed|booked|arrives?|here|booked|scheduled|gone|back|leaves?|due)\b/;

/** "Shipment left the 20th". */
const CAME = /^(?:left|came|went|arrived|shipped|landed|signed|started|closed|finished|died|expired)$/;
/** "Everybody is off monday for the fourth". */
const OFF = /\b(?:off|closed|shut|away|home)\b/;

const UPSTAIRS =
  /^(?:apartment|unit|flat|(?:bath|bed|laundry )?rooms?|baths?|bathrooms?|bedrooms?|hall|hallway|landing|closet|doors?|windows?|unit|panel|outlets?)$/;

/** "Pencil in the 2nd", "aiming for the tenth", "better than the fifth". */
const PLANNED =
  /\b(?:pencil(?:ed|led)?|aim|aiming|shoot|shooting|plan|planning|target|hoping|pushing|looking at|looking like|say|than)(?: (?:in|for|on))?$/;

/** "The fourteenth", "by the 1st", "the 30th of april", "the week of the 25th". */
export const dayOfMonth: Rule = (talk, i) => {
  if (talk.word(i - 1) !== 'the') return null;
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const { day, until, digits } = ordinal;
  // "I'll be back on the nineteenth to put it in": so high a number counts no floors and no coats.
  const plain = day >= 13 && /^(?:on|by|before|until|till|til)$/.test(talk.word(i - 2));
  // "The 29th's wide open".
  const asked = isAsked(talk, i, ordinal);
  if (!plain && !asked && !talk.ends(until) && !talk.word(until - 1).endsWith("'s")) return null;
  if (isToday(talk, i - 2, until) && day === Number(talk.today.slice(8)))
    return { from: i - 1, until, date: talk.today, rule: 'time/day-of-month' };
  const week = weekOpening(talk, i - 1);
  const told = isTold(talk, i - 2) || toldBehind(talk, i - 1, until) || CAME.test(talk.word(i - 2));
  const dated =
    isNamed(talk, i - 2) ||
    isDayItself(talk, until) ||
    isEvent(talk, i, day) ||
    asked ||
    /^at (?:the )?(?:very )?(?:earliest|latest|soonest)\b/.test(talk.join(until, until + 4)) ||
    isInSpan(talk, i, until) ||
    DAY_CUE.test(talk.word(i - 2)) ||
    endsWeek(talk, i - 1);
  // "The bathroom on the second": a floor.
  if (day < 4 && talk.word(i - 2) === 'on' && UPSTAIRS.test(talk.word(i - 3))) return null;
  const cue =
    told ||
    isOut(talk, until, day) ||
    dated ||
    SUBJECT.test(talk.word(until)) ||
    /^(?:works|suits)$/.test(talk.word(until)) ||
    PLANNED.test(talk.lead(i - 1)) ||
    (talk.word(i - 2) === 'for' && OFF.test(talk.lead(i - 2))) ||
    DATED_VERB.test(talk.lead(i - 1)) ||
    (talk.word(i - 2) === 'from' && (digits || day > 3)) ||
    isPaired(talk, { from: i - 1, until }, ordinal);
  if (week === null && !told && !digits && day < 4 && !dated) return null;
  // A bare high number counts days; a bare low one counts windows, coats and steps.
  if (week === null && !cue && day < (digits ? 8 : 13)) return null;
  if (told) return { from: i - 1, until, date: behind(talk, day), past: true, rule: 'time/day-of-month' };
  const date = inItsMonth(talk, i - 1, day) ?? coming(talk, day);
  return week === null
    ? { from: i - 1, until, date, rule: 'time/day-of-month' }
    : weekFrom(date, { from: week, until });
};

const weekFrom = (date: string, place: { from: number; until: number }): Found => ({
  ...place,
  date,
  to: addDays(date, 6),
  relation: 'during',
  rule: 'time/week-of',
});

const OR = /^(?:or|and|&|n|,)$/;

/** "The 11th or the 12th": two of them in figures, with no thing behind that they number. */
function isPaired(talk: Talk, { from, until }: { from: number; until: number }, { day, digits }: Ordinal): boolean {
  if (!digits) return false;
  const at = talk.word(until + 1) === 'the' ? until + 2 : until + 1;
  const next = OR.test(talk.word(until)) ? ordinalAt(talk, at) : null;
  if (next?.digits && Math.max(day, next.day) > 3 && talk.ends(next.until)) return true;
  const before = OR.test(talk.word(from - 1)) ? ordinalEndingAt(talk, from - 1) : null;
  return before !== null && Math.max(day, before.day) > 3;
}

/** The ordinal in figures whose words end at `at`. */
function ordinalEndingAt(talk: Talk, at: number): (Ordinal & { at: number }) | null {
  const ordinal = ordinalAt(talk, at - 2);
  return ordinal?.digits && ordinal.until === at ? { ...ordinal, at: at - 2 } : null;
}

const PROPOSED = /^(?:do|say|mtg|meeting|appt|make|want|got|try|insp|inspection)$/;
const SUITS = /^(?:ok|okay|works|work|suits|good|fine|free)$/;

/** "By 7th", "due 22nd", "w/c 27th", "the 18th, 19th and 20th": without its article. A low one after "on" is a street or a floor. */
export const bareDayOfMonth: Rule = (talk, i) => {
  const ordinal = ordinalAt(talk, i);
  if (!ordinal) return null;
  const { day, digits, until } = ordinal;
  // "Lets say 11th", "mtg 10th 9am", "9th ok for you?": as thumbs type it.
  const asked =
    digits && day > 3 && (PROPOSED.test(talk.word(i - 1)) || (talk.opens(i) && SUITS.test(talk.word(until))));
  if (!talk.ends(until) && !(asked && (SUITS.test(talk.word(until)) || hourFrom(talk, until)?.sure))) return null;
  const week = weekOpening(talk, i);
  if (week !== null) return weekFrom(coming(talk, day), { from: week, until });
  const cue = talk.word(i - 1);
  const cued = digits && (/^(?:by|due|until|till|til|before)$/.test(cue) || (cue === 'on' && day >= 13));
  const before = digits && OR.test(cue) ? ordinalEndingAt(talk, i - 1) : null;
  const listed = before && (dayOfMonth(talk, before.at) ?? bareDayOfMonth(talk, before.at));
  // "Fourteenth they're pouring": said first, with who does it behind.
  const opens = talk.opens(i) && SUBJECT.test(talk.word(until)) && (digits || day > 3);
  if (!cued && !asked && !listed && !opens && !endsWeek(talk, i)) return null;
  return toldBehind(talk, i, until)
    ? { until, date: behind(talk, day), past: true, rule: 'time/day-of-month' }
    : { until, date: coming(talk, day), rule: 'time/day-of-month' };
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

/** "It's the thirtieth", "today, the 31st", "the 31st, today". */
const isToday = (talk: Talk, before: number, until: number) =>
  /^(?:it's|its|today's|today|is|being)$/.test(talk.word(before)) ||
  (talk.word(before) === ',' && talk.word(before - 1) === 'today') ||
  talk.word(talk.word(until) === ',' ? until + 1 : until) === 'today';

/** "Do it the 5th", "how's the 12th look", "is the 10th any good", "the morning of the 5th": what else than a day is told so. */
function isAsked(talk: Talk, i: number, { until, digits, day }: Ordinal): boolean {
  const before = talk.word(i - 2);
  if (before === 'of' && /^(?:morning|night|evening|afternoon)$/.test(talk.word(i - 3))) return true;
  if (/^(?:looks?|any good|works?|suits?)\b/.test(talk.join(until, until + 2))) return digits || day > 3;
  if (!digits || !talk.ends(until)) return false;
  const handed = /^(?:hand|pass|give|send|show|get|bring|grab)$/.test(talk.word(i - 3));
  return (
    (/^(?:it|her|him|me|us|them)$/.test(before) && !handed) ||
    (before === 'make' && /\b(?:can|could) (?:you|we|he|she|they|u)\b/.test(talk.lead(i)))
  );
}

/** "Windows ship the third", "moving in the first", "her birthday's the ninth": what has a day of its own stands right before. */
const isEvent = (talk: Talk, i: number, day: number) =>
  /^(?:ships?|lands?|effective|leaves?|arrives?|closes?|starts?|pours?|closing)$/.test(talk.word(i - 2)) ||
  /\bmov(?:e|es|ing) (?:in|out)$/.test(talk.lead(i - 1)) ||
  /(?:birthday|anniversary|deadline|wedding|closing|date|payday|due)'s$/.test(talk.word(i - 2)) ||
  (day > 3 &&
    /[a-z]'s$/.test(talk.word(i - 2)) &&
    !/^(?:that|it|what|there|here|he|she|who)'s$/.test(talk.word(i - 2)));

/** "The first is tomorrow", "the third's a friday". */
const isDayItself = (talk: Talk, until: number) => {
  const at = talk.word(until) === 'is' ? until + 1 : talk.word(until - 1).endsWith("'s") ? until : 0;
  const day = talk.word(talk.word(at) === 'a' ? at + 1 : at);
  return at > 0 && /^(?:today|tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day)$/.test(day);
};

/** "The fifth's out", "the ninth's booked": said of a day that does or does not suit. Fewer than four number windows and coats. */
const isOut = (talk: Talk, until: number, day: number) =>
  talk.word(until - 1).endsWith("'s") &&
  day >= 4 &&
  /^(?:out|off|booked|full|fine|free|good|no|too|better|perfect|grand|wide|when|a|my|me|his|her|our)$/.test(
    talk.word(until),
  );

/** "From the 2nd to the 8th": either end of it. */
const isInSpan = (talk: Talk, i: number, until: number) =>
  (talk.word(i - 2) === 'from' && TO.test(talk.word(until))) ||
  (TO.test(talk.word(i - 2)) && [3, 4, 5, 6, 7].some((back) => talk.word(i - back) === 'from'));

/** "Labor day's the seventh", "friday is the 3rd". */
const isNamed = (talk: Talk, at: number) =>
  /day's$/.test(talk.word(at)) || (talk.word(at) === 'is' && /day$/.test(talk.word(at - 1)));
