import type { Quantity } from '../types.ts';
import { addDays, addHours, addMonths, dayOf } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { WEEKDAYS } from './weekdayNames.ts';
import { begunAt, endsAt } from './withinDay.ts';

/** "48 hours on the self leveler before anybody walks it": said first, of what it must be left for. */
const isLeft = (talk: Talk, i: number, until: number) =>
  talk.opens(i) &&
  /^on (?:it|the|that|this|those|them)\b.* (?:before|b4|till?|until)\b/.test(talk.join(until, until + 9));

/** "Five day cure stuff": the length is part of a thing's name. */
const isNamedBy = (talk: Talk, quantity: Quantity, until: number) =>
  quantity.value.valueOf() > 1 &&
  /^(?:day|week|month|hour)$/.test(talk.word(until - 1)) &&
  /^(?:cure|dry)$/.test(talk.word(until));

/** Words before a length of time that make it a wait, and words after it that do. */
const WAIT_BEFORE =
  /\b(?:cure|cures|cured|curing|dry|dries|drying|set|sets|sit|sits|wait|waits|give|gets?|leave|rest|let|keep|stay|stays|before|then|fans?|heaters?|dehu|off it|off of it|acclimate|cool|harden|till|until|traffic|needs?|not|don't|dont|for|soak|water|closed|wants|espere|esperar)\b/;
const WAIT_AFTER =
  /^(?:before|then|till|until|and then|and after|after (?:the|it|that|they|you|we)|to (?:cure|dry|set|harden|cool|skin|acclimate)|, ?then|wait\b|dry|cure|first|nobody|no one)\b/;
/** A length of a test or of work done is no wait. */
export const SPENT =
  /\b(?:held|hold|tested|test|took|takes|worked|spent|been|last|every|each|per|about an?|charged?|ran|runs|labor|lasted|drive)\b/;
export const SURE_WAIT = /\b(?:cure|cures|dry|set|sit|wait|let|acclimate|leave|keep|stay|stays|off)\b/;
const HOURS: Record<string, number> = { hr: 1, day: 24, week: 168, month: 720, year: 8760 };
/** Shorter lengths set no day. */
const LEAST_HOURS = 2;
/** "In two hours" is a clock time, not a day. */
const LEAST_HOURS_ON = 20;

const NIGHT = [['overnight'], ['overnite'], ['over', 'night'], ['all', 'night'], ['through', 'the', 'night']];
/** From evening to morning. Common practice, no source. */
const NIGHT_HOURS = 12;

/** "Overnight": until the next day. Told of the past, or of shipping, it is no wait. */
export const overnight: Rule = (talk, i) => {
  const words = NIGHT.find((list) => talk.says(i, list));
  if (!words || /^(?:shipping|ship|delivery|bag|crew|it|guy)$/.test(talk.word(i + words.length))) return null;
  const told = talk.toldOfPast(i) || /\b(?:held|ran|stayed|dripped|leaked)$/.test(talk.lead(i));
  if (told && !SURE_WAIT.test(talk.lead(i))) return null;
  return {
    until: i + words.length,
    date: addDays(talk.today, 1),
    relation: 'notBefore',
    hours: NIGHT_HOURS,
    rule: 'time/overnight',
  };
};

/** The day on which a length of time from now ends: hours by the clock, the rest by the calendar. */
function endOf(talk: Talk, quantity: Quantity, sign = 1): string {
  const count = quantity.value.valueOf() * sign;
  if (quantity.unit === 'year') return addMonths(talk.today, Math.round(12 * count));
  if (quantity.unit === 'month') return addMonths(talk.today, Math.round(count));
  if (quantity.unit === 'week') return addDays(talk.today, Math.round(count * 7));
  if (quantity.unit === 'day') return addDays(talk.today, Math.ceil(count));
  return dayOf(addHours(talk.now, count));
}

/** "Hold the backfill ten days", "hold off on it": work that waits, unless a test is held. */
const isHeld = (lead: string) =>
  /(?:^|\b(?:and|then|to|please|must|should|gotta|\w+'ll) )hold (?:off|the|that|this|on|back)\b/.test(lead) &&
  !/\b(?:psi|pressure|test|air|psig)\b/.test(lead);

/** "Cure 24 hours", "in a couple days", "two weeks out", "three days ago": a wait, or a day so far on or back. */
export const lengthOfTime: Rule = (talk, i) => {
  const at = talk.quantityAt(i);
  if (at?.quantity.unitKind !== 'time') return null;
  const { quantity, until } = at;
  // Of a range the longer end counts: to be safe with a cure is to wait it out.
  if (quantity.group?.kind === 'range' && quantity.group.index === 0) return null;
  const hours = quantity.value.valueOf() * (HOURS[quantity.unit ?? ''] ?? 0);
  if (hours <= 0 || hours > 24 * 400) return null;
  return (
    ago(talk, quantity, until, hours) ?? ahead(talk, i, quantity, until, hours) ?? wait(talk, i, quantity, until, hours)
  );
};

function ago(talk: Talk, quantity: Quantity, until: number, hours: number): Found | null {
  if (!/^(?:ago|back)$/.test(talk.word(until)) || hours < LEAST_HOURS_ON) return null;
  // "Two weeks ago monday" is that monday's.
  if (WEEKDAYS.has(talk.word(until + 1))) return null;
  return { until: until + 1, date: endOf(talk, quantity, -1), past: true, rule: 'time/ago' };
}

/** Who has a length of time to do something in. */
const GIVEN = /(?:\b(?:have|has|gives? (?:us|me|you|them|him|her)|got)|'ve got|'s got)(?: (?:about|only|just|maybe))?$/;

function ahead(talk: Talk, i: number, quantity: Quantity, until: number, hours: number): Found | null {
  // "In 4 to 6 weeks": its first number stands before.
  const first = quantity.group?.kind === 'range' ? talk.quantityEndingAt(i - 1) : undefined;
  const start = first?.from ?? i;
  // "In about two weeks": the hedge stands between.
  let lead = /^(?:about|around|maybe|roughly|like)$/.test(talk.word(start - 1)) ? start - 1 : start;
  // "Within the next ten days", "in the next two weeks".
  const next = talk.word(lead - 1) === 'next' && /^(?:within|in) the$/.test(talk.join(lead - 3, lead - 1));
  if (next) lead -= 2;
  // "Inside of a week", "in under two weeks".
  const inside = [['inside', 'of'], ['in', 'under'], ['in', 'less', 'than'], ['inside']].find((words) =>
    talk.says(lead - words.length, words),
  );
  if (inside && hours >= LEAST_HOURS_ON)
    return { from: lead - inside.length, until, date: endOf(talk, quantity), relation: 'by', rule: 'time/in-days' };
  const before = talk.word(lead - 1);
  const within = next || before === 'within' || talk.says(lead - 2, ['in', 'the']);
  const out = /^(?:out|away)$/.test(talk.word(until))
    ? 1
    : talk.says(until, ['to', 'go'])
      ? 2
      : /^from (?:now|today)$/.test(talk.join(until, until + 2))
        ? 2
        : 0;
  // "They have ten days to respond".
  const given = GIVEN.test(talk.lead(lead)) && talk.word(until) === 'to';
  if (given && hours >= LEAST_HOURS_ON && !talk.toldOfPast(lead - 1))
    return { from: start, until, date: endOf(talk, quantity), relation: 'by', rule: 'time/in-days' };
  if (hours < LEAST_HOURS_ON || !(before === 'in' || within || out)) return null;
  if (talk.says(until, ['in', 'a', 'row'])) return null;
  return {
    from: before === 'in' || before === 'within' ? lead - 1 : start,
    until: until + out,
    date: endOf(talk, first ? { ...quantity, value: first.quantity.value } : quantity),
    ...(first && { to: endOf(talk, quantity) }),
    relation: within ? 'by' : 'on',
    rule: 'time/in-days',
  };
}

function wait(talk: Talk, i: number, quantity: Quantity, until: number, hours: number): Found | null {
  const begun = begunAt(talk, until);
  if (begun) {
    const end = addHours(begun.from, hours);
    return {
      until: begun.until,
      date: dayOf(end),
      clock: end.slice(11),
      relation: 'notBefore',
      hours,
      rule: 'time/wait',
    };
  }
  if (hours < LEAST_HOURS || talk.word(until) === 'from') return null;
  const lead = talk.lead(i);
  const after = /^(?:minimum|min)$/.test(talk.word(until)) ? until + 1 : until;
  const follow = talk.join(after, after + 3);
  if (
    /\b(?:in a row|business|work|working|lead|notice|pay|wages|labou?r)\b/.test(follow) ||
    /^(?:of|a (?:day|week|night))\b/.test(follow)
  )
    return null;
  // "For two days now" has been going on.
  if (talk.word(until) === 'now' && talk.word(i - 1) === 'for') return null;
  const cures = /^to (?:cure|dry|set|harden|go off|acclimate)\b/.test(follow);
  if (SPENT.test(lead) && !cures && !SURE_WAIT.test(lead) && !isHeld(lead)) return null;
  if (isHeld(lead))
    return {
      until,
      date: endOf(talk, quantity),
      ...endsAt(talk, hours),
      relation: 'notBefore',
      hours,
      rule: 'time/wait',
    };
  if (talk.word(i - 1) === 'after' && !talk.toldOfPast(i))
    return {
      until,
      date: endOf(talk, quantity),
      ...endsAt(talk, hours),
      relation: 'notBefore',
      hours,
      rule: 'time/wait',
    };
  if (isNamedBy(talk, quantity, until) || /\b(?:good|lasts?|open|workable) for$/.test(lead)) return null;
  // "Two more days on the mud".
  const more =
    (quantity.more === true || talk.word(i - 1) === 'another') && hours >= LEAST_HOURS_ON && !talk.toldOfPast(i);
  if (!more && !WAIT_BEFORE.test(lead) && !WAIT_AFTER.test(follow) && !isLeft(talk, i, until)) return null;
  return {
    until,
    date: endOf(talk, quantity),
    ...endsAt(talk, hours),
    relation: 'notBefore',
    hours,
    rule: 'time/wait',
  };
}
