import { remembered } from '../remembered.ts';
import { ODD } from './oddSounds.ts';

/**
 * How words sound, from their spelling alone: each letter or group of letters to the sound that English most often gives
 * it, one character a sound. Rough on purpose: it tells what dictation may have taken for what, and the words around
 * decide. Capitals are long vowels (A ay, I ee, Y eye, O oh, U oo, W ow, Q oy, 3 er) and S sh, C ch, J j, N ng, 0 th.
 */

/** A spelling, its sound, and where it is said so: `^` at the start of a word, `$` at its end. */
interface Spelt {
  letters: string;
  sound: string;
  where: '' | '^' | '$';
}

/** By first letter; what stands first is tried first. Vowels before a consonant and a last e are lengthened apart. */
const SPELT: ReadonlyMap<string, readonly Spelt[]> = byFirst(
  'augh:o aigh:A air:Er alk:ok ai:A ay:A au:o aw:o a:a ' +
    'bb:b b:b ' +
    'cian:Sun cious:Sus ch:C ck:k cc:k c:k ' +
    'dg:J dd:d d:d ' +
    'eigh:A ear:Ir eau:O ea:I ee:I ey$:I ei:A ey:A ew:U eu:U er:3 e$: e:e ' +
    'ff:f f:f ' +
    'gh^:g ght:t gh:f gn^:n gg:g g:g ' +
    'h:h ' +
    'igh:Y ies$:Is ie$:I ie:I ir:3 i$:I i:i ' +
    'j:J ' +
    'kn^:n kk:k k:k ' +
    'll:l l:l ' +
    'mb$:m mm:m m:m ' +
    'ng:N nn:n n:n ' +
    'ough:o our:or oar:or oor:or oa:O oo:U ou:W ow$:O ow:W oi:Q oy:Q oe$:O oh:O o$:O o:o ' +
    'ph:f pn^:n ps^:s pp:p p:p ' +
    'qu:kw q:k ' +
    'rr:r r:r ' +
    'sion:Sun ssion:Sun sch:sk sh:S ssure:S3 sure$:S3 ss:s s:s ' +
    'tion:Sun tch:C ture$:C3 tial:Sul th:0 tt:t t:t ' +
    'ur:3 ue$:U uy:Y ui:U u$:U u:u ' +
    'v:v ' +
    'wr^:r wh:w w:w ' +
    'x^:s x:ks ' +
    'y^:y y:i ' +
    'zz:s z:s',
);

const LONG: Readonly<Record<string, string>> = { a: 'A', e: 'I', i: 'Y', o: 'O', u: 'U', y: 'Y' };
const isVowel = (letter: string | undefined) =>
  letter === 'a' || letter === 'e' || letter === 'i' || letter === 'o' || letter === 'u' || letter === 'y';

function byFirst(rows: string): Map<string, Spelt[]> {
  const map = new Map<string, Spelt[]>();
  for (const row of rows.split(' ')) {
    const [spelling, sound] = row.split(':') as [string, string];
    const where = spelling.endsWith('^') ? '^' : spelling.endsWith('$') ? '$' : '';
    const letters = where ? spelling.slice(0, -1) : spelling;
    const list = map.get(letters[0]!) ?? [];
    list.push({ letters, sound, where });
    map.set(letters[0]!, list);
  }
  return map;
}

/** The sounds of a word of small letters. One letter alone is said by its name. */
function soundsOfSpelling(word: string): string {
  if (word.length === 1) return LETTER_SOUNDS[word] ?? '';
  const ending = endingOf(word);
  const end = word.length - ending.letters;
  let out = '';
  let last = '';
  for (let i = 0; i < end; ) {
    const spelt = speltAt(word, i, end);
    const letters = spelt ? spelt.letters.length : 1;
    let sound = spelt ? spelt.sound : '';
    if (letters === 1) sound = alone(word, i, end, sound, ending.lengthens);
    else if (sound === 'N' && word[i + letters] === 'e' && i + letters === end) sound = 'nJ';
    // A sound met twice running is heard once.
    if (sound) {
      out += last === sound[0] ? sound.slice(1) : sound;
      last = out[out.length - 1]!;
    }
    i += letters;
  }
  if (out.includes('Or')) out = out.replace('Or', 'or');
  return last === ending.sound ? out : out + ending.sound;
}

function speltAt(word: string, i: number, end: number): Spelt | undefined {
  const rows = SPELT.get(word[i]!);
  if (!rows) return undefined;
  for (const row of rows) {
    const after = i + row.letters.length;
    if (after > end || (row.letters.length > 1 && !word.startsWith(row.letters, i))) continue;
    if (row.where === '' || (row.where === '^' ? i === 0 : after === word.length)) return row;
  }
  return undefined;
}

/** What one letter is said as between its neighbours. */
function alone(word: string, i: number, end: number, sound: string, lengthens: boolean): string {
  const letter = word[i]!;
  const next = word[i + 1];
  if (letter === 'c') return next === 'e' || next === 'i' || next === 'y' ? 's' : sound;
  if (letter === 'g') return i > 0 && (next === 'e' || next === 'y') ? 'J' : sound;
  if (lengthens && LONG[letter] && isMagic(word, i, end)) return LONG[letter]!;
  if (letter === 'y' && i > 0) return yAt(word, i, end);
  if (letter === 'l' && lengthens && i + 1 === end && !isVowel(word[i - 1])) return 'ul';
  return sound;
}

interface Ending {
  letters: number;
  sound: string;
  /** An e behind one consonant: the vowel before that is long. */
  lengthens: boolean;
}

const NO_ENDING: Ending = { letters: 0, sound: '', lengthens: false };
const SILENT_E: Ending = { letters: 1, sound: '', lengthens: true };
const ending = (sound: string): Ending => ({ letters: 2, sound, lengthens: true });
const [IS, S, ID, T, D] = [ending('is'), ending('s'), ending('id'), ending('t'), ending('d')];
const HISSES = 'sxzcgh';
const VOICELESS = 'ckpsxfh';

/** A last e is not said, nor is that of "tiles" and "taped", except behind a hiss or a t or d. */
function endingOf(word: string): Ending {
  const { length } = word;
  const final = word[length - 1];
  if (length < 3 || (final !== 'e' && word[length - 2] !== 'e') || !'esd'.includes(final!)) return NO_ENDING;
  const before = word[length - (final === 'e' ? 2 : 3)]!;
  if (isVowel(before)) return NO_ENDING;
  if (final === 'e') return /[st]ure$/.test(word) ? NO_ENDING : SILENT_E;
  if (length < 4) return NO_ENDING;
  if (final === 's') return HISSES.includes(before) ? IS : S;
  if (length < 5 || !/[aeiouy]/.test(word.slice(0, -3))) return NO_ENDING;
  return before === 't' || before === 'd' ? ID : VOICELESS.includes(before) ? T : D;
}

/** A vowel, one consonant, and the e that lengthens it: "tape", "tapes". */
const isMagic = (word: string, i: number, end: number) =>
  i === end - 2 && !isVowel(word[i + 1]) && word[i + 1] !== 'x' && word[i + 1] !== 'w' && !isVowel(word[i - 1]);

/** "Fly", but "only". */
const yAt = (word: string, i: number, end: number) =>
  i === end - 1 ? (/[aeiou]/.test(word.slice(0, i)) ? 'I' : 'Y') : 'i';

/** The names of the letters, as they are said. */
const LETTER_SOUNDS: Readonly<Record<string, string>> = Object.fromEntries(
  (
    'a:A b:bI c:sI d:dI e:I f:ef g:JI h:AC i:Y j:JA k:kA l:el m:em n:en o:O p:pI q:kyU r:ar s:es t:tI u:yU v:vI ' +
    'w:dubulyU x:eks y:wY z:sI'
  )
    .split(' ')
    .map((row) => row.split(':') as [string, string]),
);

/** How a word sounds. */
export const soundOf = remembered((word) => {
  const bare = /[^a-z]/.test(word) ? word.replace(/[^a-z]/g, '') : word;
  return ODD[bare] ?? soundsOfSpelling(bare);
});

/** The sounds of several words. */
export const soundsOf = (words: readonly string[]): string => words.map(soundOf).join('');

const INITIALS =
  /^[b-df-hj-np-tv-z]{2,4}$|^(?:abs|osb|uf|emt|gfi|gfci|afci|rcd|gpo|abs|ac|tv|led|usb|oc|epdm|hvac|eifs|io)$/;

/** The sounds of a name's word: "osb" is said o, s, b. */
export const soundOfName = (word: string): string =>
  INITIALS.test(word) ? [...word].map((letter) => LETTER_SOUNDS[letter]).join('') : soundOf(word);

/** The sounds of a name's words. */
export const soundsOfName = (words: readonly string[]): string => words.map(soundOfName).join('');
