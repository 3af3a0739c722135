/**
 * How a word sounds, from its spelling alone: letters to the sounds that English most often gives them. Rough on
 * purpose: it tells what dictation may have taken for what, and the words around decide.
 */
const SPELT: readonly (readonly [spelling: RegExp, sound: string])[] = [
  [/^(?:kn|gn|pn)/, 'n'],
  [/^wr/, 'r'],
  [/^wh/, 'w'],
  [/mb$/, 'm'],
  [/oh(?![aeiou])/g, 'O'],
  // "Ducked" ends as "duct" does, "felled" nearly as "felt".
  [/([ckpsxf]|ch|sh)ed$/, '$1t'],
  [/(?<=[aeiou].*[^aeioutd])ed$/, 'd'],
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
  [/(?<=[^aeiou])y([^aeiouyAYI])e$/, 'Y$1'],
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

/** Consonants by letter, voice left out; vowels, h and w are no bones. A x is two. */
const BONE_OF: Readonly<Record<string, string>> = Object.fromEntries(
  'b:p d:t f:f j:C k:k l:l m:m n:m p:p q:k r:r s:s t:t v:f z:s'.split(' ').map((pair) => pair.split(':')),
);
const BONE = Uint8Array.from({ length: 128 }, (_, code) => BONE_OF[String.fromCharCode(code)]?.charCodeAt(0) ?? 0);
const [SOFT_C, HARD_C, TH, SH, F, S] = [...'Ck0Sfs'].map((bone) => bone.charCodeAt(0)) as [
  number,
  number,
  number,
  number,
  number,
  number,
];

/** Bones of one name at a time, as character codes. */
export class Bones {
  readonly codes = new Uint8Array(256);
  length = 0;

  /** The consonants of the letters from `from` to `until` are put behind those there; one met twice running is heard once. */
  add(word: string, from: number, until: number): void {
    for (let i = from; i < until; i++) {
      const letter = word[i]!;
      const next = i + 1 < until ? word[i + 1]! : '';
      const soft = next === 'e' || next === 'i' || next === 'y';
      if (letter === 'c') {
        if (next === 'h') i++;
        this.#put(next === 'h' ? SOFT_C : soft ? S : HARD_C);
      } else if (letter === 'g') {
        if (next === 'h' ? i === from : !(next === 'n' && i === from)) this.#put(soft ? SOFT_C : HARD_C);
      } else if (letter === 'x') {
        this.#put(HARD_C);
        this.#put(S);
      } else if (next === 'h' && (letter === 't' || letter === 's' || letter === 'p')) {
        i++;
        this.#put(letter === 't' ? TH : letter === 's' ? SH : F);
      } else if (!(i === from && letter === 'k' && next === 'n') && !(letter === 'b' && !next && word[i - 1] === 'm'))
        this.#put(BONE[word.charCodeAt(i)] ?? 0);
    }
  }

  #put(bone: number): void {
    if (bone && this.codes[this.length - 1] !== bone && this.length < this.codes.length)
      this.codes[this.length++] = bone;
  }
}

/** The consonants of a word of small letters, voice left out: what stays when a word is half heard. */
export function skeletonOf(word: string): string {
  const bones = new Bones();
  bones.add(word, 0, word.length);
  return String.fromCharCode(...bones.codes.subarray(0, bones.length));
}

const VOWELS = new Set([...'aeiouyAIYOUhw'].map((sound) => sound.charCodeAt(0)));
/** Often said so lightly that they go unheard: "bowls" for "bolts", "flaw" for "floor", "fought" for "fault". */
const SWALLOWED = new Set([...'rltd'].map((sound) => sound.charCodeAt(0)));
const CLOSE = new Set(
  ['td', 'pb', 'kg', 'fv', 'bv', 'CJ', 'mn', 'sS', 'f0', 't0', 'd0', 'SC', 'wv'].flatMap(([a, b]) => [
    a!.charCodeAt(0) * 128 + b!.charCodeAt(0),
    b!.charCodeAt(0) * 128 + a!.charCodeAt(0),
  ]),
);

/** What a sound costs to put in or leave out, and to change into another, by their character codes; a row for each. */
const COST = Float64Array.from({ length: 128 }, (_, code) =>
  VOWELS.has(code) ? 0.4 : SWALLOWED.has(code) ? 0.6 : 0.9,
);
const CHANGE = Float64Array.from({ length: 128 * 128 }, (_, pair) => {
  const [a, b] = [pair >> 7, pair & 127];
  if (a === b) return 0;
  if (CLOSE.has(pair)) return 0.4;
  if (VOWELS.has(a) && VOWELS.has(b)) return 0.3;
  return VOWELS.has(a) || VOWELS.has(b) ? 1 : 0.9;
});
const LONGEST = 64;
const row = new Float64Array(LONGEST + 1);

/**
 * How alike two words sound, 0 to 1: every sound that must be changed, put in or left out costs by how far it is off.
 *
 * @param least what would do: 0 comes back as soon as less is certain
 */
export function soundAlike(a: string, b: string, least = 0): number {
  const most = Math.max(a.length, b.length);
  if (!most) return 1;
  if (most > LONGEST || Math.abs(a.length - b.length) * 0.4 > (1 - least) * most) return 0;
  row[0] = 0;
  for (let j = 0; j < b.length; j++) row[j + 1] = row[j]! + COST[b.charCodeAt(j)]!;
  for (let i = 0; i < a.length; i++) {
    const from = a.charCodeAt(i);
    let corner: number = row[0]!;
    let nearest: number = corner + COST[from]!;
    row[0] = nearest;
    for (let j = 0; j < b.length; j++) {
      const to = b.charCodeAt(j);
      const across = corner + CHANGE[(from << 7) + to]!;
      corner = row[j + 1]!;
      const value = Math.min(across, corner + COST[from]!, row[j]! + COST[to]!);
      row[j + 1] = value;
      if (value < nearest) nearest = value;
    }
    if (nearest > (1 - least) * most) return 0;
  }
  return 1 - row[b.length]! / most;
}

/** Do two words begin with the same sound or near ones, or the same but for one left out? */
export function sameOnset(a: string, b: string): boolean {
  const near = (x: number, y: number) => (CHANGE[(a.charCodeAt(x) << 7) + b.charCodeAt(y)] ?? 0) <= 0.4;
  return near(0, 0) || near(0, 1) || near(1, 0);
}

const LETTERS: ReadonlyMap<string, string> = new Map(
  (
    'a:ay,eh b:bee,be c:see,sea d:dee e:ee f:eff,ef g:gee,jee h:aitch i:eye j:jay k:kay,okay l:el,elle,ell m:em n:en,in ' +
    'o:oh,owe p:pea,pee q:cue,queue r:are,our s:ess,es t:tea,tee u:you,ewe v:vee x:ex y:why z:zee,zed'
  )
    .split(' ')
    .flatMap((row) => {
      const [letter, names] = row.split(':') as [string, string];
      return names.split(',').map((name): [string, string] => [name, letter]);
    }),
);

/** The letter whose name a word is heard as: "jay" is j, "eff" is f. */
export const letterHeard = (word: string): string | undefined => (word.length === 1 ? word : LETTERS.get(word));
