import { behind, coming, dateIn, MONTHS } from './calendar.ts';
import { addDays, addHours, addMonths, dayOf } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { endsAt } from './withinDay.ts';

const NUMBERS = new Map<string, number>([
  ...(
    'uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis diecisiete dieciocho ' +
    'diecinueve veinte veintiuno veintidos veintitres veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve treinta'
  )
    .split(' ')
    .map((word, k) => [word, k + 1] as const),
  ['primero', 1],
  ['un', 1],
  ['una', 1],
]);

function numberAt(talk: Talk, i: number): { n: number; until: number } | null {
  if (/^\d{1,2}$/.test(talk.word(i))) return { n: Number(talk.word(i)), until: i + 1 };
  if (talk.says(i, ['treinta', 'y', 'uno'])) return { n: 31, until: i + 3 };
  const n = NUMBERS.get(talk.word(i));
  return n ? { n, until: i + 1 } : null;
}

/** "El quince de mayo", "3 de junio", "el quince", "es el 20". A low number by itself counts boards: "el dos por cuatro". */
export const spanishDay: Rule = (talk, i) => {
  const named = /^(?:el|del|al)$/.test(talk.word(i));
  // "El día 20".
  const called = named && talk.word(i + 1) === 'dia';
  const number = numberAt(talk, called ? i + 2 : named ? i + 1 : i);
  if (!number) return null;
  const { n, until } = number;
  const month = talk.word(until) === 'de' ? MONTHS.get(talk.word(until + 1)) : undefined;
  if (month) {
    const date = dateIn(talk, month, n);
    return date ? { until: until + 2, date, rule: 'time/month-day' } : null;
  }
  if (named && n <= 31 && talk.word(i - 1) === 'desde')
    return { until, date: behind(talk, n), past: true, rule: 'time/day-of-month' };
  if (!named || n > 31 || talk.quantityAt(i + 1)?.quantity.unit) return null;
  if (/^(?:x|de|y|cuartos?|pulgadas?|pies?|\/|"|'|%|-|th|st|nd|rd)$/.test(talk.word(until))) return null;
  if (talk.word(until) === 'por' && numberAt(talk, until + 1)) return null;
  const cue = /^(?:es|para|hasta|antes|viene|llega|llegan|entregan|empieza|empezamos)$/.test(talk.word(i - 1));
  return cue || called || n >= 13 ? { until, date: coming(talk, n), rule: 'time/day-of-month' } : null;
};

const DAYS: ReadonlyMap<string, number> = new Map([
  ['dia', 1],
  ['dias', 1],
  ['semana', 7],
  ['semanas', 7],
]);
const WAITS = /\b(?:deja|dejalo|dejala|dejar|dejen|seca|seque|secar|espera|espere|esperar|curar|cure|fragua)\b/;

/** "En dos días", "hace una semana", "déjalo secar 24 horas". */
export const spanishLength: Rule = (talk, i) => {
  const opens = /^(?:en|hace)$/.test(talk.word(i)) ? i + 1 : talk.says(i, ['dentro', 'de']) ? i + 2 : i;
  const number = numberAt(talk, opens);
  if (!number) return null;
  const unit = talk.word(number.until);
  const until = number.until + 1;
  const days = number.n * (DAYS.get(unit) ?? 0);
  if (opens === i) return spanishWait(talk, i, until, /^horas?$/.test(unit) ? number.n : 24 * days);
  const months = /^mes(?:es)?$/.test(unit) ? number.n : 0;
  if (!days && !months) return null;
  const on = (sign: number) => (months ? addMonths(talk.today, sign * months) : addDays(talk.today, sign * days));
  return talk.word(i) === 'hace'
    ? { until, date: on(-1), past: true, rule: 'time/ago' }
    : { until, date: on(1), relation: 'on', rule: 'time/in-days' };
};

function spanishWait(talk: Talk, i: number, until: number, hours: number): Found | null {
  if (hours < 2 || !WAITS.test(talk.lead(i))) return null;
  const end = addHours(talk.now, hours);
  return { until, date: dayOf(end), ...endsAt(talk, hours), relation: 'notBefore', hours, rule: 'time/wait' };
}
