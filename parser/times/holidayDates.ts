import { addDays, lastWeekday, weekdayOf } from './days.ts';

const first = (year: number, month: number) => `${year}-${String(month).padStart(2, '0')}-01`;

/** The nth such weekday of a month, counted from 1. */
function nth(year: number, month: number, weekday: number, n: number): string {
  const start = first(year, month);
  return addDays(start, ((weekday - weekdayOf(start) + 7) % 7) + 7 * (n - 1));
}

/** Days that crews plan around. The moving ones after 5 U.S.C. 6103(a). */
export const HOLIDAYS: readonly (readonly [words: string, on: (year: number, today: string) => string])[] = [
  ['canadian thanksgiving', (year) => nth(year, 10, 1, 2)],
  ['thanksgiving day', (year) => nth(year, 11, 4, 4)],
  ['thanksgiving', (year) => nth(year, 11, 4, 4)],
  ['christmas day', (year) => `${year}-12-25`],
  ['christmas eve', (year) => `${year}-12-24`],
  ['christmas', (year) => `${year}-12-25`],
  ["new year's eve", (year) => `${year}-12-31`],
  ['new years eve', (year) => `${year}-12-31`],
  ['nye', (year) => `${year}-12-31`],
  ["new year's day", newYear],
  ['new years day', newYear],
  ["new year's", newYear],
  ['new years', newYear],
  ['labor day', (year) => nth(year, 9, 1, 1)],
  ['labour day', (year) => nth(year, 9, 1, 1)],
  ['memorial day', (year) => lastMonday(year, 5)],
  // Canada: Holidays Act, R.S.C. 1985, c. H-5, and the provinces' own days.
  ['victoria day', victoriaDay],
  ['may two-four', victoriaDay],
  ['may long', victoriaDay],
  ['family day', (year) => nth(year, 2, 1, 3)],
  ['civic holiday', (year) => nth(year, 8, 1, 1)],
  ['remembrance day', (year) => `${year}-11-11`],
  ['st jean baptiste', (year) => `${year}-06-24`],
  // Britain: Banking and Financial Dealings Act 1971, schedule 1.
  ['bank holiday monday', bankHoliday],
  ['the august bank holiday', (year) => lastMonday(year, 8)],
  ['august bank holiday', (year) => lastMonday(year, 8)],
  ['may bank holiday', (year, today) => (nth(year, 5, 1, 1) >= today ? nth(year, 5, 1, 1) : lastMonday(year, 5))],
  ['spring bank holiday', (year) => lastMonday(year, 5)],
  ['mothering sunday', (year) => addDays(easter(year), -21)],
  ["burns' night", (year) => `${year}-01-25`],
  ['burns night', (year) => `${year}-01-25`],
  ['hogmanay', (year) => `${year}-12-31`],
  ["st david's day", (year) => `${year}-03-01`],
  ['st davids day', (year) => `${year}-03-01`],
  ["st andrew's day", (year) => `${year}-11-30`],
  // Australia: common practice, no source.
  ['melbourne cup day', (year) => nth(year, 11, 2, 1)],
  ['cup day', (year) => nth(year, 11, 2, 1)],
  ['easter tuesday', (year) => addDays(easter(year), 2)],
  ['pancake tuesday', (year) => addDays(easter(year), -47)],
  ['pancake day', (year) => addDays(easter(year), -47)],
  ['shrove tuesday', (year) => addDays(easter(year), -47)],
  ['ash wednesday', (year) => addDays(easter(year), -46)],
  ['palm sunday', (year) => addDays(easter(year), -7)],
  ['easter saturday', (year) => addDays(easter(year), -1)],
  ['election day', (year) => addDays(nth(year, 11, 1, 1), 1)],
  ["presidents' day", (year) => nth(year, 2, 1, 3)],
  ['super bowl sunday', (year) => nth(year, 2, 0, 2)],
  ['cyber monday', (year) => addDays(nth(year, 11, 4, 4), 4)],
  ["indigenous peoples' day", (year) => nth(year, 10, 1, 2)],
  ['st patricks day', (year) => `${year}-03-17`],
  ["st paddy's day", (year) => `${year}-03-17`],
  ["st paddy's", (year) => `${year}-03-17`],
  ['paddys day', (year) => `${year}-03-17`],
  ["paddy's day", (year) => `${year}-03-17`],
  ['valentines day', (year) => `${year}-02-14`],
  ["valentine's", (year) => `${year}-02-14`],
  ['valentines', (year) => `${year}-02-14`],
  ['the fourth of july', (year) => `${year}-07-04`],
  ['fourth of july', (year) => `${year}-07-04`],
  ['the new year', newYear],
  ['black friday', (year) => addDays(nth(year, 11, 4, 4), 1)],
  ['cinco de mayo', (year) => `${year}-05-05`],
  ['halloween', (year) => `${year}-10-31`],
  ['presidents day', (year) => nth(year, 2, 1, 3)],
  ["president's day", (year) => nth(year, 2, 1, 3)],
  ['mlk day', (year) => nth(year, 1, 1, 3)],
  ['martin luther king day', (year) => nth(year, 1, 1, 3)],
  ["patriots' day", (year) => nth(year, 4, 1, 3)],
  ['patriots day', (year) => nth(year, 4, 1, 3)],
  ['groundhog day', (year) => `${year}-02-02`],
  ['columbus day', (year) => nth(year, 10, 1, 2)],
  ['veterans day', (year) => `${year}-11-11`],
  ["april fools' day", (year) => `${year}-04-01`],
  ['april fools day', (year) => `${year}-04-01`],
  ['april fools', (year) => `${year}-04-01`],
  // The federal return: 26 U.S.C. 6072(a).
  ['tax day', (year) => `${year}-04-15`],
  ['day of the dead', (year) => `${year}-11-02`],
  ["veteran's day", (year) => `${year}-11-11`],
  ["veterans' day", (year) => `${year}-11-11`],
  ['juneteenth', (year) => `${year}-06-19`],
  ['canada day', (year) => `${year}-07-01`],
  ['anzac day', (year) => `${year}-04-25`],
  ['australia day', (year) => `${year}-01-26`],
  ['boxing day', (year) => `${year}-12-26`],
  ["st stephen's day", (year) => `${year}-12-26`],
  ['st stephens day', (year) => `${year}-12-26`],
  ['good friday', (year) => addDays(easter(year), -2)],
  ['easter monday', (year) => addDays(easter(year), 1)],
  ['easter sunday', easter],
  ['easter', easter],
  ["mother's day", (year) => nth(year, 5, 0, 2)],
  ['mothers day', (year) => nth(year, 5, 0, 2)],
  ["father's day", (year) => nth(year, 6, 0, 3)],
  ['fathers day', (year) => nth(year, 6, 0, 3)],
  ["st patrick's day", (year) => `${year}-03-17`],
  ["valentine's day", (year) => `${year}-02-14`],
  ['independence day', (year) => `${year}-07-04`],
  ['bonfire night', (year) => `${year}-11-05`],
  ['guy fawkes', (year) => `${year}-11-05`],
  // India: common practice, no source.
  ['republic day', (year) => `${year}-01-26`],
  ['gandhi jayanti', (year) => `${year}-10-02`],
];

const lastMonday = (year: number, month: number) => addDays(nth(year, month + 1, 1, 1), -7);

/** The last monday before the 25th of may. */
function victoriaDay(year: number): string {
  return lastWeekday(`${year}-05-25`, 1);
}

/** The coming one of Britain's bank holidays that fall on a monday. */
function bankHoliday(year: number, today: string): string {
  const days = [addDays(easter(year), 1), nth(year, 5, 1, 1), lastMonday(year, 5), lastMonday(year, 8)];
  return days.find((day) => day >= today) ?? days[0]!;
}

function newYear(year: number): string {
  return first(year, 1);
}

/** Easter Sunday of the Gregorian calendar, by the anonymous algorithm that J. Meeus, Astronomical Algorithms, ch. 8 gives. */
function easter(year: number): string {
  const century = Math.floor(year / 100);
  const golden = year % 19;
  const moon =
    (19 * golden +
      century -
      Math.floor(century / 4) -
      Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3) +
      15) %
    30;
  const rest = (32 + 2 * (century % 4) + 2 * Math.floor((year % 100) / 4) - moon - (year % 4)) % 7;
  const late = Math.floor((golden + 11 * moon + 22 * rest) / 451);
  return addDays(first(year, 3), moon + rest - 7 * late + 21);
}
