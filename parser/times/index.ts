import type { Quantity, TimeMention, TimeRelation, Token } from '../types.ts';
import { addDays, addHours, addMonths, dayOf, lastWeekday, nextWeekday, weekdayOf } from './days.ts';

/** What one rule found at a token: the day, and how far its words reach. */
interface Found {
  until: number;
  date: string;
  to?: string;
  relation?: TimeRelation;
  hours?: number;
  past?: boolean;
  rule: string;
  /** First token, where it lies before the one asked about. */
  from?: number;
}

interface Setting {
  tokens: readonly Token[];
  now: string;
  today: string;
  quantities: ReadonlyMap<number, Quantity>;
}

type Rule = (s: Setting, i: number) => Found | null;

const WEEKDAYS: Record<string, number> = {};
const named = (list: string, value: number) => {
  for (const word of list.split(' ')) WEEKDAYS[word] = value;
};
named('sunday sundays domingo', 0);
named('monday mon mondays lunes', 1);
named('tuesday tue tues martes', 2);
named('wednesday wed weds miercoles miércoles', 3);
named('thursday thu thur thurs jueves', 4);
named('friday fri viernes', 5);
named('saturday sábado sabado', 6);

const MONTHS = new Map(
  'january jan february feb march mar april apr may may june jun july jul august aug september sept october oct november nov december dec'
    .split(' ')
    .map((w, k) => [w, Math.floor(k / 2)] as const),
);
MONTHS.set('sep', 8);
// "March the layout", "may need": these months count only beside a day of the month.
const ORDINALS =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );

const word = (s: Setting, i: number) => s.tokens[i]?.word ?? '';
const pastLead = (s: Setting, i: number) => /^(?:last|past)$/.test(word(s, i - 1));

/** Weekdays: "friday", "next tuesday", "last friday", "a week from monday", "mon" and "sun" only with a cue. */
const weekday: Rule = (s, i) => {
  const w = word(s, i).replace(/'s$/, '');
  const day = WEEKDAYS[w];
  const short = w === 'sat' || w === 'sun';
  if (day === undefined && !short) return null;
  if (short && !/^(?:by|on|this|next|last|until|till|til|before|due|thru)$/.test(word(s, i - 1))) return null;
  const at = day ?? (w === 'sat' ? 6 : 0);
  const next = nextWeekday(s.today, at);
  const part = /^(?:morning|afternoon|night|evening|am|pm|aft|noon|midday)$/.test(word(s, i + 1)) ? i + 2 : i + 1;
  if (pastLead(s, i))
    return { from: i - 1, until: part, date: lastWeekday(s.today, at), past: true, rule: 'time/last-weekday' };
  const before = word(s, i - 1);
  if (/^(?:from|after)$/.test(before) && /^weeks?$/.test(word(s, i - 2))) {
    const q = s.quantities.get(i - 3) ?? s.quantities.get(i - 2);
    const weeks = q ? Math.round(q.value.valueOf()) : /^(?:two|2)$/.test(word(s, i - 3)) ? 2 : 1;
    const from = /^(?:a|one|two|2|1)$/.test(word(s, i - 3)) ? i - 3 : i - 2;
    return { from, until: part, date: addDays(next, 7 * weeks), rule: 'time/weeks-from-weekday' };
  }
  if (word(s, i + 1) === 'week') return { until: i + 2, date: addDays(next, 7), rule: 'time/weekday-week' };
  if (before === 'next')
    return {
      from: i - 1,
      until: part,
      date: weekdayOf(s.today) < at && at !== 0 && weekdayOf(s.today) !== 0 ? addDays(next, 7) : next,
      rule: 'time/next-weekday',
    };
  // Told of the past ("it was twenty six on monday"): the last such day.
  const lead = s.tokens
    .slice(Math.max(0, i - 7), i)
    .map((t) => t.word)
    .join(' ');
  if (
    /\b(?:was|were|had|did|came|said|poured|started|finished)\b[^.]*\bon$/.test(lead) &&
    !/\b(?:will|gonna|to|can|be)\b/.test(lead)
  )
    return { until: part, date: lastWeekday(s.today, at), past: true, rule: 'time/weekday-past' };
  return {
    from: before === 'this' || before === 'on' ? i - (before === 'this' ? 1 : 0) : i,
    until: part,
    date: next,
    rule: 'time/weekday',
  };
};

const RELATIVE: readonly [string[], number, boolean][] = [
  [['day', 'after', 'tomorrow'], 2, false],
  [['tomorrow'], 1, false],
  [['tmrw'], 1, false],
  [['tmw'], 1, false],
  [['tomorow'], 1, false],
  [['2morrow'], 1, false],
  [['mañana'], 1, false],
  [['manana'], 1, false],
  [['in', 'the', 'morning'], 1, false],
  [['tonight'], 0, false],
  [['today'], 0, false],
  [['hoy'], 0, false],
  [['this', 'afternoon'], 0, false],
  [['this', 'aft'], 0, false],
  [['this', 'evening'], 0, false],
  [['this', 'arvo'], 0, false],
  [['end', 'of', 'day'], 0, false],
  [['end', 'of', 'the', 'day'], 0, false],
  [['eod'], 0, false],
  [['cob'], 0, false],
  [['this', 'morning'], 0, true],
  [['yesterday'], -1, true],
  [['last', 'night'], -1, true],
  [['ayer'], -1, true],
];

/** Tomorrow, tonight, yesterday, "in the morning". */
const relative: Rule = (s, i) => {
  for (const [words, days, past] of RELATIVE) {
    if (!words.every((w, k) => word(s, i + k) === w)) continue;
    let until = i + words.length;
    if (
      words[0] === 'in' &&
      (/^(?:hour|hours|thirty|seven|eight|nine|ten|six)$/.test(word(s, i - 1)) || Number(s.now.slice(11, 13)) < 9)
    )
      return null;
    if (
      days === 0 &&
      words[0] === 'today' &&
      !past &&
      /^(?:so|anyway|done|for)$/.test(word(s, i - 1)) &&
      word(s, i - 1) === 'for'
    )
      return null;
    if (
      days === 1 &&
      /^(?:morning|afternoon|night|evening|am|pm|aft|noon|first)$/.test(word(s, until)) &&
      word(s, until) !== 'first'
    )
      until++;
    const from = word(s, i - 1) === 'the' && words[0] === 'day' ? i - 1 : i;
    return { from, until, date: addDays(s.today, days), past: past || undefined, rule: `time/${words.join('-')}` };
  }
  return null;
};

/** End of the week, next week, this weekend, end of the month. */
const span: Rule = (s, i) => {
  const said = (text: string) => text.split(' ').every((w, k) => word(s, i + k) === w);
  const friday = weekdayOf(s.today) === 5 ? s.today : nextWeekday(s.today, 5);
  const monday = nextWeekday(s.today, 1);
  if (said('end of the week') || said('end of this week'))
    return { until: i + 4, date: friday, relation: 'by', rule: 'time/end-of-week' };
  if (said('end of week')) return { until: i + 3, date: friday, relation: 'by', rule: 'time/end-of-week' };
  if (said('eow')) return { until: i + 1, date: friday, relation: 'by', rule: 'time/end-of-week' };
  if (said('end of next week'))
    return { until: i + 4, date: addDays(monday, 4), relation: 'by', rule: 'time/end-of-next-week' };
  if (said('end of the month') || said('end of month'))
    return {
      until: i + (said('end of month') ? 3 : 4),
      date: addDays(`${addMonths(s.today, 1).slice(0, 8)}01`, -1),
      relation: 'by',
      rule: 'time/end-of-month',
    };
  if (said('next week'))
    return { until: i + 2, date: monday, to: addDays(monday, 6), relation: 'during', rule: 'time/next-week' };
  if (said('later this week'))
    return { until: i + 3, date: s.today, to: friday, relation: 'during', rule: 'time/this-week' };
  if (said('this week')) return { until: i + 2, date: s.today, to: friday, relation: 'during', rule: 'time/this-week' };
  if (said('this weekend') || said('the weekend')) {
    const past = /^(?:over|last)$/.test(word(s, i - 1)) && weekdayOf(s.today) <= 2 && weekdayOf(s.today) > 0;
    const saturday = past ? lastWeekday(s.today, 6) : nextWeekday(s.today, 6);
    return {
      until: i + 2,
      date: saturday,
      to: addDays(saturday, 1),
      relation: 'during',
      past: past || undefined,
      rule: 'time/weekend',
    };
  }
  if (said('next month'))
    return {
      until: i + 2,
      date: `${addMonths(s.today, 1).slice(0, 8)}01`,
      relation: 'during',
      rule: 'time/next-month',
    };
  return null;
};

const ordinalValue = (s: Setting, i: number): { day: number; until: number } | null => {
  const w = word(s, i);
  if (/^\d{1,2}$/.test(w) && /^(?:st|nd|rd|th)$/.test(word(s, i + 1)) && !s.tokens[i + 1]!.spaced)
    return { day: Number(w), until: i + 2 };
  if (w === 'twenty' || w === 'thirty') {
    const unit = ORDINALS.indexOf(word(s, word(s, i + 1) === '-' ? i + 2 : i + 1));
    if (unit >= 0 && unit < 9)
      return { day: (w === 'twenty' ? 20 : 30) + unit + 1, until: word(s, i + 1) === '-' ? i + 3 : i + 2 };
  }
  if (w === 'thirtieth') return { day: 30, until: i + 1 };
  const at = ORDINALS.indexOf(w);
  return at >= 0 ? { day: at + 1, until: i + 1 } : null;
};

/** "The fourteenth", "by the 1st": the coming such day. Needs "the", and for the small ones a cue of time. */
const dayOfMonth: Rule = (s, i) => {
  if (word(s, i - 1) !== 'the') return null;
  const ordinal = ordinalValue(s, i);
  if (!ordinal || ordinal.day > 31) return null;
  const digits = /^\d/.test(word(s, i));
  const cue = /^(?:by|on|before|until|till|til|of|due|after)$/.test(word(s, i - 2));
  const next = s.tokens[ordinal.until];
  if (!cue || (!digits && ordinal.day < 6 && next?.kind === 'word' && !/^(?:and|so|but|at|or)$/.test(next.word)))
    return null;
  if (
    next?.kind === 'word' &&
    /^(?:coat|floor|one|time|door|window|row|course|step|outlet|set|box|bag|unit|trip|pass|light|room|bedroom|board|stud|joist|piece)s?$/.test(
      next.word,
    )
  )
    return null;
  return { from: i - 1, until: ordinal.until, date: coming(s, ordinal.day), rule: 'time/day-of-month' };
};

function coming(s: Setting, day: number): string {
  const this_ = `${s.today.slice(0, 8)}${String(day).padStart(2, '0')}`;
  return this_ > s.today
    ? this_
    : `${addMonths(`${s.today.slice(0, 8)}01`, 1).slice(0, 8)}${String(day).padStart(2, '0')}`;
}

/** "Aug 14", "14 August", "june third". */
const monthDay: Rule = (s, i) => {
  const month = MONTHS.get(word(s, i).replace(/\.$/, ''));
  if (month === undefined) return null;
  const dot = word(s, i + 1) === '.' ? 1 : 0;
  const after =
    ordinalValue(s, i + 1 + dot) ??
    (/^\d{1,2}$/.test(word(s, i + 1 + dot)) && !/^["'%/]$/.test(word(s, i + 2 + dot))
      ? { day: Number(word(s, i + 1 + dot)), until: i + 2 + dot }
      : null);
  const before = /^\d{1,2}$/.test(word(s, i - 1)) ? Number(word(s, i - 1)) : null;
  const day = after?.day ?? before;
  if (!day || day > 31) return null;
  const date = (year: number) => `${year}-${String(month + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const year = Number(s.today.slice(0, 4));
  return {
    from: after ? i : i - 1,
    until: after?.until ?? i + 1,
    date: date(year) >= s.today ? date(year) : date(year + 1),
    rule: 'time/month-day',
  };
};

/** 6/1, 11/14: a date only behind a cue, since a slash is a fraction first. */
const slash: Rule = (s, i) => {
  const [a, mark, b] = [s.tokens[i], s.tokens[i + 1], s.tokens[i + 2]];
  if (
    a?.kind !== 'number' ||
    mark?.text !== '/' ||
    b?.kind !== 'number' ||
    !/^(?:by|on|due|until|till|til|lands?|before|after|date|thru|arrives?)$/.test(word(s, i - 1))
  )
    return null;
  const [month, day] = [Number(a.text), Number(b.text)];
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= 31) || s.tokens[i + 3]?.text === '"') return null;
  const date = (year: number) => `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const year = Number(s.today.slice(0, 4));
  return { until: i + 3, date: date(year) >= s.today ? date(year) : date(year + 1), rule: 'time/slash' };
};

const WAITS =
  /\b(?:cure|cures|curing|dry|dries|drying|set|sets|sit|sits|wait|give|leave|rest|let|keep|stay|before|then|fans?|heaters?|off it|off of it|acclimate|cool|harden|till|until|says?|for)\b/;
const PER: Record<string, number> = { hr: 1, day: 24, week: 168, min: 1 / 60 };

/** "Cure 24 hours", "overnight", "in a couple days", "two weeks out": a wait, or a day so far on. */
const duration: Rule = (s, i) => {
  if (word(s, i) === 'overnight' || (word(s, i) === 'over' && word(s, i + 1) === 'night')) {
    const until = word(s, i) === 'over' ? i + 2 : i + 1;
    return { until, date: addDays(s.today, 1), relation: 'notBefore', hours: 12, rule: 'time/overnight' };
  }
  const q = s.quantities.get(i);
  if (q?.unitKind !== 'time' || (q.group?.kind === 'range' && q.group.index === 0)) return null;
  if (q.unit === 'month') return null;
  const hours = q.value.valueOf() * (PER[q.unit ?? ''] ?? 0);
  if (hours <= 0) return null;
  const date =
    q.unit === 'day' || q.unit === 'week' ? addDays(s.today, Math.ceil(hours / 24)) : dayOf(addHours(s.now, hours));
  const before = word(s, i - 1);
  const out =
    word(s, q.until) === 'out' || (word(s, q.until) === 'from' && /^(?:now|today)$/.test(word(s, q.until + 1)));
  if (word(s, q.until) === 'ago')
    return q.unit === 'day' || q.unit === 'week'
      ? { until: q.until + 1, date: addDays(s.today, -Math.round(hours / 24)), past: true, rule: 'time/ago' }
      : null;
  if (word(s, q.until) === 'from' && !out) return null;
  if ((before === 'in' || before === 'within' || out) && hours >= 20) {
    const from = before === 'in' || before === 'within' ? i - 1 : i;
    return {
      from,
      until: out ? q.until + (word(s, q.until) === 'out' ? 1 : 2) : q.until,
      date,
      relation: before === 'within' ? 'by' : 'on',
      rule: 'time/in-days',
    };
  }
  if (hours < 2) return null;
  const near = s.tokens
    .slice(Math.max(0, i - 7), i)
    .map((t) => t.word)
    .join(' ');
  const follow = s.tokens
    .slice(q.until, q.until + 3)
    .map((t) => t.word)
    .join(' ');
  if (/\b(?:in a row|business|work|working|lead)\b/.test(follow) || /^of\b/.test(follow)) return null;
  if (
    /\b(?:held|ran|tested|took|worked|spent|been|for the last|every|took me|about)\b/.test(near) &&
    !/\b(?:cure|dry|set|sit|wait|let)\b/.test(near)
  )
    return null;
  if (
    !WAITS.test(near) &&
    !/^(?:before|then|till|until|and then|to (?:cure|dry|set)|,? ?then|dry|cure|first)/.test(follow)
  )
    return null;
  return { until: q.until, date, relation: 'notBefore', hours, rule: 'time/wait' };
};

const RULES: readonly Rule[] = [relative, span, duration, monthDay, weekday, dayOfMonth, slash];

/**
 * Every day or wait named in a note, seen from `now`.
 *
 * @param now local wall time at which it was said, ISO without zone
 * @param quantities of the same tokens, for durations
 */
export function readTimes(
  tokens: readonly Token[],
  text: string,
  { now, quantities }: { now: string; quantities: readonly Quantity[] },
): TimeMention[] {
  const s: Setting = { tokens, now, today: dayOf(now), quantities: new Map(quantities.map((q) => [q.from, q])) };
  const out: TimeMention[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found = tokens[i]!.skip ? null : firstOf(s, i);
    if (!found) {
      i++;
      continue;
    }
    const from = Math.max(found.from ?? i, out.at(-1)?.until ?? 0);
    const [start, end] = [tokens[from]!.start, tokens[found.until - 1]!.end];
    out.push({
      from,
      until: found.until,
      start,
      end,
      quote: text.slice(start, end),
      date: found.date,
      to: found.to ?? null,
      relation: found.relation ?? relationOf(s, from),
      ...(found.hours !== undefined && { hours: found.hours }),
      past: found.past ?? false,
      rule: found.rule,
    });
    i = found.until;
  }
  return out;
}

function firstOf(s: Setting, i: number): Found | null {
  for (const rule of RULES) {
    const found = rule(s, i);
    if (found) return found;
  }
  return null;
}

/** By, before, not before: what stands in front of the day, "before the inspector comes friday" included. */
function relationOf(s: Setting, from: number): TimeRelation {
  const before = word(s, from - 1) === 'on' ? word(s, from - 2) : word(s, from - 1);
  if (/^(?:by|due|thru|through)$/.test(before)) return 'by';
  if (/^(?:until|till|til|after)$/.test(before)) return 'notBefore';
  const lead = s.tokens
    .slice(Math.max(0, from - 8), from)
    .map((t) => t.word)
    .join(' ');
  if (/\b(?:not to|don't|dont|do not|not|no|nobody|nothing)\b.*\b(?:before|b4|until|till|til)(?: \w+)?$/.test(lead))
    return 'notBefore';
  if (/^(?:before|b4)$/.test(before)) return 'before';
  if (
    /\b(?:before|b4) (?:the |we |they |he |she )?(?:\w+ ){0,3}(?:comes?|shows?|gets? here|arrives?|back|is here|here|on)?$/.test(
      lead,
    ) &&
    /\b(?:before|b4)\b/.test(lead)
  )
    return 'before';
  return 'on';
}
