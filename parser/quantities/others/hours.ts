import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import { type ClaimRule, isDigits } from './claim.ts';

const HOURS = wordSet('one two three four five six seven eight nine ten eleven twelve 1 2 3 4 5 6 7 8 9 10 11 12');
const LED = wordSet('is are at to for until till from before after by');
const MET = wordSet(
  'appointment cita meeting doctor clinic court class lunch truck delivery inspector inspection open opens close closes come comes coming start starts arrive arrives leave',
);
const REACH = 6;

/** "My appointment is the nine and half", "come at the seven": the hour with its article, as who grew up with Spanish says it. */
export const articledHour: ClaimRule = (line, i) => {
  if (!HOURS.has(line.word(i)) || line.word(i - 1) !== 'the' || !LED.has(line.word(i - 2))) return null;
  const part = /^(?:and|y)$/.test(line.word(i + 1)) && /^(?:half|quarter|media|cuarto)$/.test(line.word(i + 2));
  const until = part ? i + 3 : i + 1;
  if (unitAt(line, until, line.number(i)) || !(endsPhrase(line, until) || line.word(until) === 'in')) return null;
  return isMet(line, i) || /^in the (?:morning|afternoon|night|evening)$/.test(words(line, until, 3))
    ? { until, kind: 'clock' }
    : null;
};

const words = (line: Line, at: number, count: number) =>
  Array.from({ length: count }, (_, k) => line.word(at + k)).join(' ');

const isMet = (line: Line, i: number) => {
  for (let k = i - 3; k >= i - REACH && k >= 0; k--) if (MET.has(line.word(k))) return true;
  return false;
};

const SPANISH_HOURS = wordSet(
  'una dos tres cuatro cinco seis siete ocho nueve diez once doce 1 2 3 4 5 6 7 8 9 10 11 12',
);
const SPANISH_CUES = wordSet('a hasta desde para sobre como son eran entre de y');
const MINUTES = wordSet('media cuarto pico cinco diez quince veinte veinticinco treinta');

/** "A las tres y media", "hasta las 5", "tipo 2 y media", "las once menos cuarto": the hour in Spanish. */
export const spanishHour: ClaimRule = (line, i) => {
  const before = line.word(i - 1);
  if (!SPANISH_HOURS.has(line.word(i)) || !/^(?:las?|tipo)$/.test(before)) return null;
  const part = /^(?:y|menos)$/.test(line.word(i + 1)) && MINUTES.has(line.word(i + 2));
  const until = part ? i + 3 : i + 1;
  const next = line.word(until);
  // "Las dos y media pulgadas", "a las tres puertas": counted.
  if (unitAt(line, until, null) || /..[^s']s$/.test(next) || /^(?:x|by|["'/%-])$/.test(next)) return null;
  const cued = before === 'tipo' ? endsPhrase(line, until) : SPANISH_CUES.has(line.word(i - 2));
  return part || cued ? { until, kind: 'clock' } : null;
};

const ARRIVING = wordSet('there here meet meeting start starting call till til until by sharp back');

/** "Be there 730 sharp", "b there 830": hour and minutes run together. */
export const writtenHour: ClaimRule = (line, i) => {
  const text = line.tokens[i]?.text ?? '';
  if (!isDigits(line, i) || !/^(?:[1-9]|1[0-2])[0-5][05]$/.test(text)) return null;
  const next = line.word(i + 1);
  if (/^(?:sharp|am|pm|ish)$/.test(next)) return { until: i + 2, kind: 'clock' };
  const ends = endsPhrase(line, i + 1) && !/^(?:by|x|×|of|["'”’%/-])$/.test(next);
  // "1700 by 700": a size.
  const sized = line.word(i - 1) === 'by' && [2, 3].some((back) => line.tokens[i - back]?.kind === 'number');
  return ARRIVING.has(line.word(i - 1)) && !sized && ends && !unitAt(line, i + 1, line.number(i))
    ? { until: i + 1, kind: 'clock' }
    : null;
};
