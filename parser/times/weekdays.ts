import { namedDay } from './datedWeekday.ts';
import { isName, NO_DAY } from './dayInName.ts';
import { addDays, lastWeekday, nextWeekday, weekdayOf } from './days.ts';
import { isMeant } from './shortDays.ts';
import type { Rule, Talk } from './talk.ts';
import { happened, opensWithDeed, toldBehind } from './told.ts';
import { namesWhatCame, recordedOn, toldOfThing } from './toldOf.ts';
import { PART, WEEKDAYS } from './weekdayNames.ts';
import { lengthFrom, ofNamedWeek, weekdaysFromNow, weeksAgo } from './weekdayWeeks.ts';

/** Weekdays: "friday", "next tuesday", "last friday", "a week from monday", "monday week", "friday the 14th". */
export const weekday: Rule = (talk, i) => {
  const ahead = weekdaysFromNow(talk, i);
  if (ahead) return ahead;
  const day =
    WEEKDAYS.get(talk.bare(i)) ??
    (talk.word(i + 1) === 'ago' || isWhose(talk, i) ? WEEKDAYS.get(talk.word(i).replace(/s$/, '')) : undefined);
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
  const week = ofNamedWeek(talk, i, { day, until });
  if (week) return week;
  if (talk.word(i + 1) === 'week' && !talk.says(i + 1, ['week', 'of']))
    return { until: i + 2, date: addDays(next, 7), rule: 'time/weekday-week' };
  if (before === 'next') {
    // Said on a wednesday, "next friday" is the one of next week; said on a friday, "next monday" is the coming one.
    const today = weekdayOf(talk.today);
    const sameWeek = today !== 0 && (day === 0 ? 7 : day) > today;
    return { from: i - 1, until, date: sameWeek ? addDays(next, 7) : next, rule: 'time/next-weekday' };
  }
  // "Today, monday", "it's monday and nobody's here": the day on which it is said.
  const named = before === ',' ? talk.word(i - 2) : before;
  const isNow =
    /^(?:today|today's)$/.test(named) || (/^(?:it's|its)$/.test(named) && /^(?:and|,|)$/.test(talk.word(until)));
  if (isNow && weekdayOf(talk.today) === day) return { until, date: talk.today, rule: 'time/today' };
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
    : (talk.word(until) === 'gone' && talk.bare(i) === talk.word(i)) || past || last
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
    (before === 'on' && talk.toldOfPast(i - 1)) ||
    (before === 'back' && talk.toldOfPast(i - 1) && !/\bgot\b/.test(talk.lead(i))) ||
    // "Still nothing from the city as of friday".
    (talk.says(i - 2, ['as', 'of']) &&
      i > 2 &&
      isLast(talk, until) &&
      !/\b(?:can|will|should|goes?|starts?)\b/.test(talk.lead(i)))
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

/** "Mondays delivery is late": a possessive that was typed without its mark. */
const isWhose = (talk: Talk, i: number) =>
  /days$/.test(talk.word(i)) &&
  /^(?:delivery|pour|inspection|meeting|walkthrough|visit|appointment|install|drop|job|list|rain|storm|shipment|load)$/.test(
    talk.word(i + 1),
  ) &&
  !/^(?:on|every|most|all)$/.test(talk.word(i - 1));

/** "It rained tuesday and wednesday": the second lies behind with the first, unless something new is said of it. */
const isWithPast = (talk: Talk, i: number, until: number): boolean =>
  /^(?:and|&|n)$/.test(talk.word(i - 1)) &&
  WEEKDAYS.has(talk.word(i - 2)) &&
  !/^(?:i|we|he|she|they|it|the|is)(?:'|$)/.test(talk.word(until)) &&
  weekday(talk, i - 2)?.past === true;

/** "Swing past friday with the keys": by the house, on the friday. */
const PASSING = /^(?:swing|drop|come|coming|call|stop|pop|nip|run|drive|walk|go|going|get|slip|be)$/;

const isLast = (talk: Talk, at: number) => talk.tokens[at] === undefined || talk.tokens[at]!.kind === 'break';

/** "We lost monday to the rain". */
const WASTED = /^(?:lost|missed|skipped|wasted|worked)$/;

/** "Every other friday is payday". */
const EVERY_OTHER = /\b(?:every|each) (?:other|second|third)$/;
