/**
 * How a word sounds, from its spelling alone: letters to the sounds that English most often gives them. Rough on
 * purpose: it tells what dictation may have taken for what, and the words around decide.
 */
const SPELT: readonly (readonly [spelling: RegExp, sound: string])[] = [
  [/^(?:kn|gn|pn)/, 'n'],
  [/^wr/, 'r'],
  [/^wh/, 'w'],
  [/mb$/, 'm'],
  [/eigh|aigh/g, 'A'],
  [/igh/g, 'Y'],
  [/ough|augh/g, 'o'],
  [/tch|ch/g, 'C'],
  [/[ts]ion|cian/g, 'Sn'],
  [/sch/g, 'sk'],
  [/sh|sc(?=ia|io)/g, 'S'],
  [/th/g, '0'],
  [/ph|gh/g, 'f'],
  [/ck|q/g, 'k'],
  [/dge|dg|g(?=[eiy])|j/g, 'J'],
  [/sc(?=[eiy])|c(?=[eiy])|z/g, 's'],
  [/c/g, 'k'],
  [/x/g, 'ks'],
  // A final e lengthens the vowel before it.
  [/a([^aeiouyAYI])e$/, 'A$1'],
  [/e([^aeiouyAYI])e$/, 'I$1'],
  [/i([^aeiouyAYI])e$/, 'Y$1'],
  [/o([^aeiouyAYI])e$/, 'O$1'],
  [/u([^aeiouyAYI])e$/, 'U$1'],
  [/ai|ay|ei|ey/g, 'A'],
  [/ee|ea|ie/g, 'I'],
  [/oa|ow|oe/g, 'O'],
  [/oo|ew|ue|ou|eu/g, 'U'],
  [/aw|au/g, 'o'],
  [/(?<=^[^aeiouAYIOU]+)[yi]$|ye|uy/g, 'Y'],
  [/y(?!$)(?=[aeiou])/g, 'y'],
  [/y$/g, 'I'],
  [/(.)\1+/g, '$1'],
  [/e$/, ''],
];

/** The sounds of a word of small letters: consonants as they are, vowels in capitals where long. */
export function soundsOfSpelling(word: string): string {
  let out = word;
  for (const [spelling, sound] of SPELT) out = out.replace(spelling, sound);
  return out;
}

/** Consonants by letter, voice left out; vowels, h and w are no bones. */
const BONES: Readonly<Record<string, string>> = Object.fromEntries(
  'b:p d:t f:f j:C k:k l:l m:m n:m p:p q:k r:r s:s t:t v:f x:ks z:s'.split(' ').map((pair) => pair.split(':')),
);
const SOFT = new Set(['e', 'i', 'y']);

/** Its consonants alone, voice left out: what stays when a word is half heard. Many words are asked, so letter by letter. */
export function skeletonOf(word: string): string {
  let out = '';
  for (let i = 0; i < word.length; i++) {
    const letter = word[i]!;
    const next = word[i + 1] ?? '';
    let bone = BONES[letter] ?? '';
    if (letter === 'c') {
      bone = next === 'h' ? 'C' : SOFT.has(next) ? 's' : 'k';
      if (next === 'h') i++;
    } else if (letter === 'g') {
      if (next === 'h') bone = i === 0 ? 'k' : '';
      else if (next === 'n' && i === 0) bone = '';
      else bone = SOFT.has(next) ? 'C' : 'k';
    } else if (next === 'h' && (letter === 't' || letter === 's' || letter === 'p')) {
      bone = { t: '0', s: 'S', p: 'f' }[letter];
      i++;
    } else if (i === 0 && letter === 'k' && next === 'n') bone = '';
    else if (letter === 'b' && !next && word[i - 1] === 'm') bone = '';
    if (bone && !out.endsWith(bone)) out += bone;
  }
  return out;
}

const VOWEL = /[aeiouyAIYOUhw]/;

const CLOSE = new Set(['td', 'pb', 'kg', 'fv', 'CJ', 'mn', 'sS', 'f0', 't0', 'd0', 'SC']);
const isClose = (a: string, b: string) => CLOSE.has(a + b) || CLOSE.has(b + a);

/** How alike two words sound, 0 to 1: every sound that must be changed, put in or left out costs by how far it is off. */
export function soundAlike(a: string, b: string): number {
  const row = new Float64Array(b.length + 1);
  for (let j = 0; j < b.length; j++) row[j + 1] = row[j]! + costOf(b[j]!);
  for (let i = 0; i < a.length; i++) {
    let corner = row[0]!;
    row[0] = corner + costOf(a[i]!);
    for (let j = 0; j < b.length; j++) {
      const across = corner + changeOf(a[i]!, b[j]!);
      corner = row[j + 1]!;
      row[j + 1] = Math.min(across, corner + costOf(a[i]!), row[j]! + costOf(b[j]!));
    }
  }
  const most = Math.max(a.length, b.length);
  return most ? 1 - row[b.length]! / most : 1;
}

const costOf = (sound: string) => (VOWEL.test(sound) ? 0.4 : 0.9);

function changeOf(a: string, b: string): number {
  if (a === b) return 0;
  const [vowelA, vowelB] = [VOWEL.test(a), VOWEL.test(b)];
  if (vowelA && vowelB) return 0.3;
  return vowelA || vowelB ? 1 : isClose(a, b) ? 0.4 : 0.9;
}

const LETTERS: Readonly<Record<string, string>> = Object.fromEntries(
  (
    'a:ay,eh b:bee,be c:see,sea d:dee e:ee f:eff,ef g:gee,jee h:aitch i:eye j:jay k:kay,okay l:el,elle,ell m:em n:en,in ' +
    'o:oh,owe p:pea,pee q:cue,queue r:are,our s:ess,es t:tea,tee u:you,ewe v:vee x:ex y:why z:zee,zed'
  )
    .split(' ')
    .flatMap((row) => {
      const [letter, names] = row.split(':') as [string, string];
      return names.split(',').map((name) => [name, letter]);
    }),
);

/** The letter whose name a word is heard as: "jay" is j, "eff" is f. */
export const letterHeard = (word: string): string | undefined => (word.length === 1 ? word : LETTERS[word]);
