import { dateIn, isPastDay } from './calendar.ts';
import { hourFrom } from './clock.ts';
import { DATED_VERB } from './daysOfMonth.ts';
import type { Found, Rule, Talk } from './talk.ts';

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

/** `23.04.2026`: with stops between, the day stands first. */
function dotDate(talk: Talk, i: number): Found | null {
  const [day, month] = /^\d{1,2}\.\d{2}$/.test(talk.word(i)) ? talk.word(i).split('.').map(Number) : [];
  const year = /^\.20\d\d$/.test(talk.word(i + 1)) ? Number(talk.word(i + 1).slice(1)) : 0;
  const date = day && month && year ? dateIn(talk, month, day, year) : null;
  return date ? { until: i + 2, date, rule: 'time/dotted' } : null;
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

const EVENT =
  /^(?:inspections?|insp|delivery|deliveries|final|rates?|pour|walk|walkthrough|closing|closures?|deadline|due|appt|appointment|meeting|install|handover|hearing|draw|expiry|cutoff)$/;
const COMER = /^(?:guys?|crew|man|fella|bloke|lads?|sub|inspector|plumber|roofers?|painters?|tilers?)$/;
const WHO = /^(?:we|they|he|she|i)(?:'(?:re|s|ll|m|d))?$/;

/**
 * "10/1 rate goes up", "12/3 for the hood vent guy", "11/11 banks closed", "delivery 5/8": what comes or happens stands
 * beside the pair. Cables are named by such a pair too, fractions by others: those want the clearer word.
 */
function happensThen(talk: Talk, i: number, until: number): boolean {
  const named = talk.word(i - 1) === '.' ? i - 2 : i - 1;
  if (EVENT.test(talk.word(named)) && talk.ends(until)) return true;
  if (!talk.opens(i)) return false;
  const [a, b] = [Number(talk.word(i)), Number(talk.word(i + 2))];
  if (EVENT.test(talk.word(until))) return !(isCable(a, b) && /^rates?$/.test(talk.word(until)));
  if (a < b && isRuled(b)) return false;
  const behind = talk.join(until + 1, until + 6).split(' ');
  if (talk.word(until) === 'for') return behind.some((word) => EVENT.test(word) || COMER.test(word));
  if (talk.word(until) === 'is')
    return (a > b && !isCable(a, b)) || behind.slice(0, 4).some((word) => EVENT.test(word) || /day$/.test(word));
  if (isCable(a, b)) return false;
  return WHO.test(talk.word(until)) || behind.slice(0, 2).some((word) => /^(?:closed|closes|shuts?|off)$/.test(word));
}

/** What a rule is divided into. */
const isRuled = (parts: string | number) => /^(?:2|4|8|16|32|64)$/.test(String(parts));

/** Two or three wires of an even gauge. */
const isCable = (gauge: number, wires: number) =>
  /^(?:6|8|10|12|14)$/.test(String(gauge)) && /^[234]$/.test(String(wires));

/** "Unit 12/14": a door or a drawing of that number. */
const PLACE = /^(?:unit|room|rm|apt|apartment|suite|lot|grid|line|detail|sheet|house|number|no|ratio)$/;

const WEAK_CUE = /^(?:starts?|begins?|finish|finishes|ends?|expires?|eta|on|before|b4|after|is|for|up|in|to|from)$/;

/** `6/1`, `9/3/26`: a slash is a fraction first, so a date needs a cue before it, or a year. */
export const slashDate: Rule = (talk, i) => {
  const dashed = dashDate(talk, i) ?? shortDash(talk, i) ?? dotDate(talk, i);
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
  if (/\b(?:pitch|slope|rise)\b/.test(talk.lead(i)) || PLACE.test(talk.word(i - 1))) return null;
  // "31/3": more than twelve months there are not, so the day stands first.
  const dayFirst =
    !(b.text === '3' && a.text === '14') && Number(a.text) > 12 && Number(a.text) <= 31 && Number(b.text) <= 12;
  const [month, day] = (dayFirst ? [b.text, a.text] : [a.text, b.text]).map(Number) as [number, number];
  if (!year && !isDate(talk, i, until, dayFirst)) return null;
  const past = !year && isPastDay(talk, { from: i, until }, { month, day });
  const date = dateIn(talk, month, day, year, past);
  return date ? { until, date, ...(past && { past }), rule: 'time/slash' } : null;
};

/** Whether a pair of figures without a year is a date: by its cue, by its pair, or as no rule is ruled in it. */
function isDate(talk: Talk, i: number, until: number, dayFirst: boolean): boolean {
  const [a, b] = [talk.word(i), talk.word(i + 2)];
  const fraction = isRuled(b) || (b === '3' && /^1[024]$/.test(a));
  const strong =
    STRONG_CUE.test(talk.word(i - 1)) ||
    /\b(?:no|not) (?:later|sooner|earlier) than$/.test(talk.lead(i)) ||
    /\b(?:due|shows? up|lands?)\b/.test(talk.lead(i));
  const allDay = a === '24' && b === '7';
  if (dayFirst && !allDay && !/^(?:2|4|8|16)$/.test(b) && talk.ends(until)) return true;
  // No rule is ruled in 15ths or 22nds: "final insp 7/22" needs no cue.
  if (
    Number(b) > 12 &&
    !fraction &&
    !/^[\d/"'%-]/.test(talk.word(i - 1)) &&
    !/^(?:["'%/-]|amps?$)/.test(talk.word(until))
  )
    return true;
  if (happensThen(talk, i, until)) return true;
  // "8/6 2pm": an hour of the clock behind it.
  if (hourFrom(talk, until)?.sure && /^(?:\d.*[ap]m|[ap]m|:|\d+)$/.test(talk.word(until))) return true;
  // "6/20 or 6/22".
  const paired =
    (/^(?:or|and|,)$/.test(talk.word(i - 1)) && talk.word(i - 3) === '/') ||
    (/^(?:or|and|,)$/.test(talk.word(until)) && talk.word(until + 2) === '/' && talk.word(until + 1) === a);
  const cued = strong || (paired && !fraction && !allDay);
  const weak = WEAK_CUE.test(talk.word(i - 1)) && !allDay && (!fraction || DATED_VERB.test(talk.lead(i)));
  return (cued || weak) && talk.ends(until);
}
