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
const VOWEL = /[aeiouy]/;
const isVowel = (letter: string | undefined) => letter !== undefined && VOWEL.test(letter);

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
export function soundsOfSpelling(word: string): string {
  if (word.length === 1) return LETTER_SOUNDS[word] ?? '';
  // A last e is not said, nor is that of "tiles" and "taped", except behind a hiss or a t or d.
  const ending = endingOf(word);
  const end = word.length - ending.letters;
  let out = '';
  for (let i = 0; i < end; ) {
    const spelt = SPELT.get(word[i]!)?.find(
      ({ letters, where }) =>
        word.startsWith(letters, i) &&
        i + letters.length <= end &&
        (where === '' || (where === '^' ? i === 0 : i + letters.length === word.length)),
    );
    let sound = spelt?.sound ?? '';
    const letters = spelt?.letters.length ?? 1;
    const next = word[i + letters];
    if (letters === 1 || spelt?.letters === 'gg') {
      if (sound === 'k' && word[i] === 'c' && /[eiy]/.test(next ?? '')) sound = 's';
      else if (sound === 'g' && letters === 1 && /[ey]/.test(next ?? '') && i > 0) sound = 'J';
      else if (LONG[word[i]!] && isMagic(word, i, end, ending.lengthens)) sound = LONG[word[i]!]!;
      else if (word[i] === 'y' && i > 0) sound = yAt(word, i, end);
      else if (word[i] === 'l' && i + 1 === end && ending.lengthens && !isVowel(word[i - 1])) sound = 'ul';
      else if (word[i] === 'b' && i + 1 < end) sound = 'b';
    } else if (spelt?.letters === 'ng' && (next === 'e' || isVowel(next)) && word[i + 2] === 'e') sound = 'nJ';
    // A sound met twice running is heard once.
    out += sound && out.at(-1) === sound[0] ? sound.slice(1) : sound;
    i += letters;
  }
  out = out.replace('Or', 'or');
  return out + (out.at(-1) === ending.sound && ending.sound ? '' : ending.sound);
}

interface Ending {
  letters: number;
  sound: string;
  /** An e behind one consonant: the vowel before that is long. */
  lengthens: boolean;
}

const NO_ENDING: Ending = { letters: 0, sound: '', lengthens: false };

function endingOf(word: string): Ending {
  if (word.length < 3 || /[st]ure$/.test(word)) return NO_ENDING;
  if (/[^aeiouy]e$/.test(word)) return { letters: 1, sound: '', lengthens: true };
  if (/(?:s|x|z|sh|ch|c|g)es$/.test(word) && word.length > 3) return { letters: 2, sound: 'is', lengthens: true };
  if (/[^aeiouy]es$/.test(word) && word.length > 3) return { letters: 2, sound: 's', lengthens: true };
  if (/[td]ed$/.test(word) && word.length > 4) return { letters: 2, sound: 'id', lengthens: true };
  if (word.length > 4 && /[aeiouy][^aeiouy]*[^aeiouytd]ed$/.test(word))
    return { letters: 2, sound: /(?:[ckpsxf]|ch|sh)ed$/.test(word) ? 't' : 'd', lengthens: true };
  return NO_ENDING;
}

/** A vowel, one consonant, and the e that lengthens it: "tape", "tapes". */
const isMagic = (word: string, i: number, end: number, lengthens: boolean) =>
  lengthens && i === end - 2 && !isVowel(word[i + 1]) && !/[xw]/.test(word[i + 1]!) && !isVowel(word[i - 1]);

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

const known = new Map<string, string>();
const MOST_KNOWN = 20_000;

/** How a word sounds; notes say the same words again and again, so each is worked out once. */
export function soundOf(word: string): string {
  let own = known.get(word);
  if (own === undefined) {
    const bare = /[^a-z]/.test(word) ? word.replace(/[^a-z]/g, '') : word;
    own = ODD[bare] ?? soundsOfSpelling(bare);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(word, own);
  }
  return own;
}

/** The sounds of several words. */
export const soundsOf = (words: readonly string[]): string => words.map(soundOf).join('');

const INITIALS = /^[b-df-hj-np-tv-z]{2,4}$|^(?:abs|osb|uf|emt|gfi|gfci|afci|rcd|gpo|abs|ac|tv|led|usb|oc|epdm|hvac|eifs|io)$/;

/** The sounds of a name's word: "osb" is said o, s, b. */
export const soundOfName = (word: string): string =>
  INITIALS.test(word) ? [...word].map((letter) => LETTER_SOUNDS[letter]).join('') : soundOf(word);
