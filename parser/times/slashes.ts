import { DATED_VERB, dateIn } from './calendar.ts';
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

const WEAK_CUE = /^(?:on|before|b4|after|is|for|up|in|to|from)$/;

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
  if (/\b(?:pitch|slope|rise)\b/.test(talk.lead(i))) return null;
  // "31/3": more than twelve months there are not, so the day stands first.
  const dayFirst =
    !(b.text === '3' && a.text === '14') && Number(a.text) > 12 && Number(a.text) <= 31 && Number(b.text) <= 12;
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
