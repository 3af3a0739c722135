import { dateIn, monthDay, ordinalMonth } from './calendar.ts';
import { countAt } from './counts.ts';
import { addDays, lastWeekday, nextWeekday, weekdayOf } from './days.ts';
import { theOrdinal } from './daysOfMonth.ts';
import { holidayAt } from './holidays.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { happened, opensWithDeed, toldBehind } from './told.ts';
import { namesWhatCame, recordedOn, toldOfThing } from './toldOf.ts';

export const WEEKDAYS = new Map<string, number>(
  [
    'sunday sun domingo',
    'monday mon lunes',
    'tuesday tue tues martes',
    'wednesday wed weds miercoles',
    'thursday thu thur thurs jueves',
    'friday fri viernes',
    'saturday sat sabado',
  ].flatMap((names, day) => names.split(' ').map((name) => [name, day] as const)),
);

/** Short names that are also other words: "sat in the garage", "the sun side", "wed the two pieces". */
const DOUBTFUL = new Set(['sun', 'sat', 'wed', 'mon']);
const CUE =
  /^(?:by|on|this|next|last|until|till|til|before|b4|due|thru|through|or|and|&|n|to|late|early|come|comes|coming|for|since)$/;
const PART = /^(?:mornin|morning|afternoon|arvo|night|evening|am|pm|aft|noon|midday|lunchtime|eod)$/;

/** Weekdays: "friday", "next tuesday", "last friday", "a week from monday", "monday week", "friday the 14th". */
export const weekday: Rule = (talk, i) => {
  const ahead = weekdaysFromNow(talk, i);
  if (ahead) return ahead;
  const day =
    WEEKDAYS.get(talk.bare(i)) ??
    (talk.word(i + 1) === 'ago' ? WEEKDAYS.get(talk.word(i).replace(/s$/, '')) : undefined);
  if (day === undefined || !isMeant(talk, i) || isName(talk, i)) return null;
  const until = PART.test(talk.bare(i + 1)) ? i + 2 : i + 1;
  const before = talk.word(i - 1);
  const next = nextWeekday(talk.today, day);
  if (/^(?:every|each|los|cada)$/.test(before) || NO_DAY.test(talk.word(until)) || EVERY_OTHER.test(talk.lead(i)))
    return null;
  const dated = namedDay(talk, until);
  if (dated) return dated;
  if (talk.word(until) === 'pasado')
    return { until: until + 1, date: lastWeekday(talk.today, day), past: true, rule: 'time/last-weekday' };
  if (before === 'last' || (before === 'past' && !PASSING.test(talk.word(i - 2))) || before === 'pasado')
    return {
      from: talk.says(i - 2, ['this', 'past']) ? i - 2 : i - 1,
      until,
      date: lastWeekday(talk.today, day),
      past: true,
      rule: 'time/last-weekday',
    };
  const ago = weeksAgo(talk, i);
  if (ago) {
    const date = addDays(lastWeekday(talk.today, day), -7 * ago.weeks);
    return { from: ago.from, until: ago.until ?? until, date, past: true, rule: 'time/weekday-ago' };
  }
  const far = lengthFrom(talk, i);
  if (far) return { from: far.from, until, date: addDays(next, far.days), rule: 'time/length-from-weekday' };
  if (talk.says(i + 1, ['after', 'next'])) {
    const following = addDays(nextWeekday(talk.today, 1), 7);
    return { until: i + 3, date: addDays(following, (day + 6) % 7), rule: 'time/weekday-after-next' };
  }
  const spanish = spanishWeek(talk, i);
  if (spanish) {
    const date = addDays(nextWeekday(talk.today, 1), ((day + 6) % 7) - (spanish.coming ? 0 : 7));
    return { until: spanish.until, date, rule: 'time/weekday-next-week' };
  }
  const week = talk.word(i + 1) === 'of' ? i + 2 : i + 1;
  if (talk.says(week, ['last', 'week'])) return { until: week + 2, ...ofLastWeek(talk, day) };
  if (before === 'on' ? talk.says(i - 3, ['last', 'week']) : talk.says(i - 2, ['last', 'week']))
    return { until, ...ofLastWeek(talk, day) };
  const back = countAt(talk, until);
  if (back && talk.says(back.until, ['weeks', 'ago'])) {
    const monday = addDays(nextWeekday(talk.today, 1), -7 * (back.count + 1));
    return { until: back.until + 2, date: addDays(monday, (day + 6) % 7), past: true, rule: 'time/weekday-ago' };
  }
  // "Friday this week": whatever is said of the week behind it.
  if (talk.says(week, ['this', 'week']) && talk.word(week + 2) !== "'")
    return toldBehind(talk, i, week + 2) || happened(talk, i)
      ? { until: week + 2, date: lastWeekday(talk.today, day), past: true, rule: 'time/weekday-past' }
      : { until: week + 2, date: nextWeekday(addDays(talk.today, -1), day), rule: 'time/this-weekday' };
  if (talk.says(week, ['next', 'week'])) {
    const monday = nextWeekday(talk.today, 1);
    return { until: week + 2, date: addDays(monday, (day + 6) % 7), rule: 'time/weekday-next-week' };
  }
  if (talk.word(i + 1) === 'week' && !talk.says(i + 1, ['week', 'of']))
    return { until: i + 2, date: addDays(next, 7), rule: 'time/weekday-week' };
  if (before === 'next') {
    // Said on a wednesday, "next friday" is the one of next week; said on a friday, "next monday" is the coming one.
    const today = weekdayOf(talk.today);
    const sameWeek = today !== 0 && (day === 0 ? 7 : day) > today;
    return { from: i - 1, until, date: sameWeek ? addDays(next, 7) : next, rule: 'time/next-weekday' };
  }
  if (talk.says(until, ['que', 'viene'])) return { until: until + 2, date: next, rule: 'time/this-weekday' };
  if (before === 'this' || before === 'coming' || before === 'proximo') {
    const from = talk.says(i - 2, ['this', 'coming']) ? i - 2 : i - 1;
    return { from, until, date: next, rule: 'time/this-weekday' };
  }
  const past =
    talk.word(until) === 'past' && !/^(?:\d.*|noon|midday|lunch|two|three|four|five)$/.test(talk.word(until + 1));
  const last = talk.word(until) === 'last' && talk.ends(until + 1);
  const gone = talk.says(until, ['just', 'gone'])
    ? until + 2
    : talk.word(until) === 'gone' || past || last
      ? until + 1
      : 0;
  if (gone) return { until: gone, date: lastWeekday(talk.today, day), past: true, rule: 'time/weekday-past' };
  // "Thursday morning", told later on that day.
  const hour = Number(talk.now.slice(11, 13));
  const goneBy = /^mornin/.test(talk.word(i + 1)) ? hour >= 7 : hour >= 12;
  const isToday = weekdayOf(talk.today) === day && until === i + 2 && goneBy;
  if (isToday && (happened(talk, i) || isRoundNow(talk, i)))
    return { until, date: talk.today, past: true, rule: 'time/weekday-past' };
  if (
    before === 'since' ||
    before === 'desde' ||
    talk.says(i - 2, ['desde', 'el']) ||
    happened(talk, i) ||
    opensWithDeed(talk, i) ||
    toldBehind(talk, i, until) ||
    toldOfThing(talk, i, until) ||
    namesWhatCame(talk, i, until) ||
    recordedOn(talk, i - 1) ||
    isWithPast(talk, i, until) ||
    WASTED.test(before) ||
    ((before === 'on' || before === 'back') && talk.toldOfPast(i - 1))
  )
    return { until, date: lastWeekday(talk.today, day), past: true, rule: 'time/weekday-past' };
  return { until, date: next, rule: 'time/weekday' };
};

/** "Okay walking the basement Monday morning", said as the first thing on that morning: the round that is being made. */
const isRoundNow = (talk: Talk, i: number): boolean => {
  const opens =
    /^(?:(?:okay|ok|alright|right|so|hey|just|this is|here) )*(?:walking|doing|checking|starting|looking|standing|going) (?:[a-z]+ ){1,5}$/;
  return i < 9 && opens.test(`${talk.join(0, i)} `);
};

/** "A week ago thursday", "two weeks ago monday", "two mondays ago": how many weeks before the last one. */
/** "Friday of last week", "last week on thursday". */
const ofLastWeek = (talk: Talk, day: number) =>
  ({
    date: addDays(nextWeekday(talk.today, 1), ((day + 6) % 7) - 14),
    past: true,
    rule: 'time/last-weekday',
  }) as const;

/** "Two fridays from now": so many of them on. */
function weekdaysFromNow(talk: Talk, i: number): Found | null {
  const day = WEEKDAYS.get(talk.word(i).replace(/s$/, ''));
  const count = talk.says(i + 1, ['from', 'now']) ? talk.quantityEndingAt(i) : undefined;
  if (day === undefined || !count || (count.quantity.unit !== null && count.quantity.unit !== 'each')) return null;
  const weeks = Math.round(count.quantity.value.valueOf()) - 1;
  return {
    from: count.from,
    until: i + 3,
    date: addDays(nextWeekday(talk.today, day), 7 * weeks),
    rule: 'time/weekday',
  };
}

function weeksAgo(talk: Talk, i: number): { from: number; until?: number; weeks: number } | null {
  if (talk.word(i + 1) === 'ago') {
    const count = talk.quantityEndingAt(i);
    return count?.quantity.unit === null
      ? { from: count.from, until: i + 2, weeks: Math.round(count.quantity.value.valueOf()) - 1 }
      : null;
  }
  if (talk.word(i - 1) !== 'ago') return null;
  if (talk.word(i - 2) === 'week' && !countAt(talk, i - 3))
    return { from: talk.word(i - 3) === 'a' ? i - 3 : i - 2, weeks: 1 };
  const span = talk.quantityEndingAt(i - 1);
  return span?.quantity.unit === 'week' ? { from: span.from, weeks: Math.round(span.quantity.value.valueOf()) } : null;
}

/** "It rained tuesday and wednesday": the second lies behind with the first, unless something new is said of it. */
const isWithPast = (talk: Talk, i: number, until: number): boolean =>
  /^(?:and|&|n)$/.test(talk.word(i - 1)) &&
  WEEKDAYS.has(talk.word(i - 2)) &&
  !/^(?:i|we|he|she|they|it|the|is)(?:'|$)/.test(talk.word(until)) &&
  weekday(talk, i - 2)?.past === true;

/** "Swing past friday with the keys": by the house, on the friday. */
const PASSING = /^(?:swing|drop|come|coming|call|stop|pop|nip|run|drive|walk|go|going|get|slip|be)$/;

/** "We lost monday to the rain". */
const WASTED = /^(?:lost|missed|skipped|wasted|worked)$/;

/** "Sunday best", "the monday crew": a name with a day in it. */
const NO_DAY =
  /^(?:mornings|afternoons|nights|evenings|trading|roast|market|league|football|harbou?r|street|road|creek|lane|club|dieu|best|school|paper|papers|mug|crew|crowd|special|drivers?|football|funnies|blues|feeling|quarterback|traffic|rush|rates?|pric(?:e|es|ing)|sales?|wages?|rota|shift)$/;
const TO_COME = /\b(?:will|can|could|gonna|going|should|coming|comes?|do|start|starts|set|be|by|on)\b|'ll\b/;

/** Something that sat, a sun that shone, a pair that wed. */
const SITS =
  /\b(?:i|we|he|she|they|who|that|which|where|has|had|been|just|the|a|these|those|in|of)(?: \w+)?$|\b(?:the|a|an|my|our|his|her) \w+$|^$/;

/** "Every other friday is payday". */
const EVERY_OTHER = /\b(?:every|each) (?:other|second|third)$/;

const CALLED = /\b(?:happy|boy|girl|named|name is|name's|(?:dog|fella|man|guy|lad|bloke) called)$/;
const ANIMAL = /^(?:ate|dug|chewed|barked|barks|bit|peed|pissed|licked|chased|growled|stole|wants)$/;
const BEAST = /^(?:dog|cat|pup|puppy|horse|kitten|parrot|donkey|goat)$/;
const WHOSE = /^(?:the|a|my|our|his|her|their)$/;
/** "Friday dug up the forms", "friday the dog", "black friday pricing": somebody's name, or part of another. */
const isName = (talk: Talk, i: number): boolean =>
  CALLED.test(talk.lead(i)) ||
  /^(?:casual|taco|throwback|fat|ruby|man|girl)$/.test(talk.word(i - 1)) ||
  /\bthank (?:god|christ|goodness) (?:it's|its|for)$/.test(talk.lead(i)) ||
  // "What a monday", "never on a friday": one like all others.
  (talk.word(i - 1) === 'a' && talk.ends(i + 1) && !/^(?:week|fortnight)$/.test(talk.word(i - 2))) ||
  ANIMAL.test(talk.word(i + 1)) ||
  (talk.word(i + 1) === 'the' && BEAST.test(talk.word(i + 2))) ||
  (/^(?:is|was)$/.test(talk.word(i + 1)) && WHOSE.test(talk.word(i + 2)) && BEAST.test(talk.word(i + 3))) ||
  (holidayAt(talk, i - 1)?.until ?? 0) > i;

function isMeant(talk: Talk, i: number): boolean {
  const word = talk.bare(i);
  if (!DOUBTFUL.has(word)) return true;
  // "The sun's out", but "mon's no good".
  if (word !== talk.word(i))
    return /^(?:mon|wed)$/.test(word) && /^(?:no|out|good|fine|booked|better|free|full|off)$/.test(talk.word(i + 1));
  if (CUE.test(talk.word(i - 1)) || PART.test(talk.word(i + 1))) return true;
  // "Sat week we're away", "sat 10/17".
  if ((talk.word(i + 1) === 'week' && talk.ends(i + 2)) || slashDay(talk, i + 1)) return true;
  // "He'll do the gas line sat": told last, of what is to come.
  const last = talk.tokens[i + 1];
  if (
    (last === undefined || last.kind !== 'word') &&
    !/^(?:i|we|he|she|it|they|the|who|that)$/.test(talk.word(i - 1)) &&
    TO_COME.test(talk.lead(i))
  )
    return true;
  // "Recheck sat", "fix it Sat.", "shutdown sat 6-10a": a time of day or the end follows, and nothing before it sits.
  const closes = last === undefined || last.kind !== 'word' || last.word === 'when';
  if (closes && !SITS.test(talk.lead(i))) return true;
  // "Wed need a bigger saw": "we'd" without its mark.
  if (word === 'wed' && /^(?:need|have|better|like|love|never|been|had|rather|be)$/.test(talk.word(i + 1)))
    return false;
  if (/^(?:the|a)$/.test(talk.word(i - 1))) return false;
  if (word === 'sat' || word === 'sun')
    return WEEKDAYS.has(talk.word(i + 2)) && /^(?:or|and|&|n|\/)$/.test(talk.word(i + 1));
  return !/^(?:the|it|them|two|these|those|both|that|my|his|her|our)$/.test(talk.word(i + 1));
}

/** "Friday the 14th", "monday, Aug 14": the named day wins over the coming weekday. */
/** "Sat 10/17", "mon 3/1": a pair of figures that falls on that weekday is a date. */
function slashDay(talk: Talk, at: number): Found | null {
  const [month, day] = [talk.word(at), talk.word(at + 2)];
  if (talk.word(at + 1) !== '/' || !/^\d{1,2}$/.test(month) || !/^\d{1,2}$/.test(day)) return null;
  const weekday = WEEKDAYS.get(talk.bare(/^[,.]$/.test(talk.word(at - 1)) ? at - 2 : at - 1));
  for (const past of [false, true]) {
    const date = dateIn(talk, Number(month), Number(day), undefined, past);
    if (date && weekdayOf(date) === weekday) return { until: at + 3, date, ...(past && { past }), rule: 'time/slash' };
  }
  return null;
}

function namedDay(talk: Talk, until: number): Found | null {
  const at = /^[,.]$/.test(talk.word(until)) && until < talk.tokens.length - 1 ? until + 1 : until;
  const ordinal =
    talk.word(at) === 'the' ? theOrdinal(talk, at + 1) : /^\d{1,2}$/.test(talk.word(at)) ? theOrdinal(talk, at) : null;
  const figure = /^\d{1,2}$/.test(talk.word(at)) ? monthDay(talk, at + 1) : null;
  const dated =
    ordinalMonth(talk, talk.word(at) === 'the' ? at + 1 : at) ?? (figure?.from === at ? figure : monthDay(talk, at));
  const found = slashDay(talk, at) ?? dated ?? (ordinal && talk.ends(ordinal.until) ? ordinal : null);
  return found && (found.from ?? at) >= until - 1 ? { ...found, from: until - 1 } : null;
}

/** "A week from", "two days after" before a weekday: how many days on from it. */
function lengthFrom(talk: Talk, i: number): { from: number; days: number } | null {
  if (!/^(?:from|after)$/.test(talk.word(i - 1))) return null;
  const span = talk.quantityEndingAt(i - 1);
  const days = span?.quantity.unit === 'week' ? 7 : span?.quantity.unit === 'day' ? 1 : 0;
  if (span && days) return { from: span.from, days: Math.round(span.quantity.value.valueOf() * days) };
  return talk.word(i - 2) === 'week' ? { from: i - 2, days: 7 } : null;
}

const COMING_WEEK = [
  ['de', 'la', 'proxima', 'semana'],
  ['de', 'la', 'semana', 'que', 'viene'],
  ['de', 'la', 'otra', 'semana'],
];

/** "El martes de la semana que viene", "de esta semana": which week's it is, and where its words end. */
function spanishWeek(talk: Talk, i: number): { until: number; coming: boolean } | null {
  const coming = COMING_WEEK.find((words) => talk.says(i + 1, words));
  if (coming) return { until: i + 1 + coming.length, coming: true };
  return talk.says(i + 1, ['de', 'esta', 'semana']) ? { until: i + 4, coming: false } : null;
}
