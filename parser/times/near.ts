import { addDays } from './days.ts';
import { byFirstWord } from './phrases.ts';
import type { Rule, Talk } from './talk.ts';
import { happened } from './told.ts';
import { WEEKDAYS } from './weekdayNames.ts';

/** Phrases for one day near the note: words, days on, whether what is told lies behind. */
const NEAR = byFirstWord<readonly [words: readonly string[], days: number, past?: true]>(
  (
    [
      ['the day after tomorrow', 2],
      ['day after tomorrow', 2],
      ['pasado mañana', 2],
      ['tomorrow', 1],
      ["today's", 0],
      ["tonight's", 0],
      ["the morn's morn", 1],
      ['the morn', 1],
      ['to morrow', 1],
      ['tom morning', 1],
      ['tom am', 1],
      ['to night', 0],
      ['the morra', 1],
      ['the morrow', 1],
      ["th'morrow", 1],
      ["tomorrow's", 1],
      ['mañana', 1],
      ['manana', 1],
      ['after lunch', 0],
      ['later today', 0],
      ['today', 0],
      ['tonight', 0],
      ['hoy', 0],
      ['esta tarde', 0],
      ['esta noche', 0],
      ['esta mañana', 0, true],
      ['this afternoon', 0],
      ['this aft', 0],
      ['this arvo', 0],
      ['this evening', 0],
      ['this morning', 0, true],
      ['yesterday', -1, true],
      ["yesterday's", -1, true],
      ['the day before yesterday', -2, true],
      ['day before yesterday', -2, true],
      ['last night', -1, true],
      ['day before last', -2, true],
      ['the night before last', -2, true],
      ['night before last', -2, true],
      ['ayer', -1, true],
      ['anoche', -1, true],
      ['anteayer', -2, true],
      ['antier', -2, true],
    ] as const
  ).map(([words, days, past]) => [words.split(' '), days, past] as const),
);

/** What thumbs hang to a 2: "2day", "2nite", "2moro". */
const GLUED: ReadonlyMap<string, number> = new Map([
  ...['day', 'nite', 'night'].map((word) => [word, 0] as const),
  ...['moro', 'morro', 'morow', 'morrow', 'mro', 'mrw', 'moz', 'mora', 'mz'].map((word) => [word, 1] as const),
]);
/** "2day cure". */
const MADE_OF_DAYS = /^(?:cure|dry|set|wait|hold|job|lead|turnaround|delivery|old|minimum|min|mix)$/;

const PART = /^(?:mornin|morning|afternoon|arvo|night|evening|am|pm|aft|noon|midday|eod)$/;

/** Tomorrow, tonight, yesterday, "first thing tomorrow", "tmrw AM", "in the morning". */
export const nearDay: Rule = (talk, i) => {
  if (talk.says(i, ['in', 'the']) && /^mornin(?:g|')?$/.test(talk.word(i + 2))) return inTheMorning(talk, i);
  if (talk.word(i) === 'morning' && /^(?:till|until|til)$/.test(talk.word(i - 1)))
    return { until: i + 1, date: addDays(talk.today, 1), rule: 'time/till-morning' };
  const thumbed = GLUED.get(talk.word(i + 1));
  if (talk.word(i) === '2' && thumbed !== undefined && (thumbed > 0 || !talk.tokens[i + 1]!.spaced)) {
    const until = PART.test(talk.word(i + 2)) ? i + 3 : i + 2;
    const day = talk.word(i + 1) === 'day' && MADE_OF_DAYS.test(talk.word(until));
    if (!day) return { until, date: addDays(talk.today, thumbed), rule: 'time/typed' };
  }
  for (const [words, days, past] of NEAR.get(talk.word(i)) ?? []) {
    if (!talk.says(i, words) || (words[0]!.endsWith("'s") && /^(?:news|papers?|special)$/.test(talk.word(i + 1))))
      continue;
    // "A las siete de la mañana", "por la mañana": the part of a day.
    // "The last night" is the final one.
    if (words[0] === 'last' && talk.word(i - 1) === 'the') continue;
    if (/^ma[ñn]ana$/.test(words[0]!) && talk.word(i - 1) === 'la') continue;
    let until = i + words.length;
    if (/^(?:por|en|a) la (?:mañana|manana|tarde|noche)$/.test(talk.join(until, until + 3))) until += 3;
    if (days !== 0 && PART.test(talk.word(until))) until++;
    return { until, date: addDays(talk.today, days), ...(past && { past }), rule: `time/${words.join('-')}` };
  }
  return null;
};

const DAY =
  /\b(?:tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|lunes|martes|miercoles|jueves|viernes|sabado|domingo)\b/;

/** Tomorrow's, unless it is told of the past, of a habit, or said before the day has begun. */
function inTheMorning(talk: Talk, i: number) {
  const lead = talk.lead(i);
  if (/\b(?:every|always|usually|each|early)\b/.test(lead) || talk.toldOfPast(i)) return null;
  // Behind another day it only says which part of it: "tomorrow at seven in the morning".
  if (DAY.test(lead)) return null;
  const early = Number(talk.now.slice(11, 13)) < 5;
  return { until: i + 3, date: addDays(talk.today, early ? 0 : 1), rule: 'time/in-the-morning' };
}

const DAY_ENDS = [
  'end of the day',
  'end of day',
  'eod',
  'cob',
  'close of business',
  'close of play',
  'end of play',
  'end of business',
  'end of shift',
  'by quitting time',
  'before quitting time',
  'by knock off',
  'by lunch',
  'by lunchtime',
  'before lunch',
].map((s) => s.split(' '));

const isDay = (talk: Talk, i: number) => /^(?:today|tomorrow)$/.test(talk.word(i)) || WEEKDAYS.has(talk.word(i));

/** "Eod", "by end of day": today, unless a day follows it, which the reader of that day then takes. */
export const endOfDay: Rule = (talk, i) => {
  const words = DAY_ENDS.find((list) => talk.says(i, list));
  if (!words || talk.lead(i).endsWith('at the')) return null;
  // "He did the bell before lunch", "never trust a mason before lunch".
  if (words.length === 2 && (happened(talk, i) || talk.toldOfPast(i) || /\b(?:never|always)\b/.test(talk.lead(i))))
    return null;
  // "Friday by end of day", "tomorrow before lunch": only says when on that day.
  if (/^(?:by|before|,|at|the)$/.test(talk.word(i - 1)) ? isDay(talk, i - 2) : isDay(talk, i - 1)) return null;
  return { until: i + words.length, date: talk.today, relation: 'by', rule: 'time/end-of-day' };
};
