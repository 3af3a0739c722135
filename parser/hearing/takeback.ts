import type { Token } from '../types.ts';

/** Taking back a number: another one follows and stands instead. */
const OF_NUMBERS = byFirstWord([
  'no wait make that',
  'no wait make it',
  'no make that',
  'no make it',
  'no wait',
  'no sorry',
  'no hang on',
  'no hold on',
  'no i mean',
  'no actually',
  'no it was',
  "no it's",
  'no its',
  'no call it',
  "no let's say",
  'no lets say',
  'no get',
  'no no',
  'no scratch that',
  'no mejor',
  'no espera',
  'no espérate',
  'mejor',
  'perdón',
  "that's wrong",
  'that was wrong',
  'i read it wrong',
  'i read that wrong',
  'i said it wrong',
  'i got it wrong',
  'no strike that',
  'no let me correct that',
  'no i meant',
  'no better make it',
  'no just',
  'no only',
  'check that',
  'oops',
  'whoops',
  'my bad',
  'my mistake',
  'let me correct that',
  'correct that',
  'correct that to',
  'change that to',
  'change it to',
  'change that',
  'i meant',
  'i tell a lie',
  'tell a lie',
  'actually make it',
  'actually make that',
  'sorry no',
  'sorry make it',
  'sorry make that',
  'sorry i mean',
  'sorry i meant',
  'strike that make it',
  'scrap that',
  'scrub that',
  'take that back',
  'i take that back',
  'wait no make it',
  'wait no make that',
  'wait make that',
  'wait no',
  'wait',
  'make that',
  'hang on',
  'hold on',
  'sorry',
  'not sorry',
  'scratch that make it',
  'scratch that',
  'strike that',
  'or rather',
  'rather',
  'i mean',
  'correction',
  'actually no',
  'actually',
  'call it',
  'excuse me',
  'better make it',
  'better make that',
  'well',
]);

/** Taking back what was just said, whole. */
const OF_CLAUSES = byFirstWord([
  'scratch that last bit',
  'scratch that',
  'strike that',
  'scrap that',
  'scrub that',
  'cancel that',
  'never mind that',
  'nevermind that',
  'forget that',
  'forget i said that',
  'delete that',
  'disregard that',
  'ignore that',
]);

type Phrases = ReadonlyMap<string, readonly (readonly string[])[]>;

/** Longest first under each first word, so that the first that fits is the one meant. */
function byFirstWord(phrases: readonly string[]): Phrases {
  const index = new Map<string, string[][]>();
  for (const words of phrases.map((phrase) => phrase.split(' ')))
    index.set(
      words[0]!,
      [...(index.get(words[0]!) ?? []), words].sort((a, b) => b.length - a.length),
    );
  return index;
}

/** "Naw", "nah": no. */
const plain = (token: Token | undefined) => (/^(?:naw|nah|nope)$/.test(token?.word ?? '') ? 'no' : (token?.word ?? ''));

/** Whom it is said to: "nah sorry mate ninety". */
const ADDRESSED = /^(?:mate|man|bro|buddy|boss|sir|pal|guys|compa)$/;

/** Where the last of several such phrases ends: "no wait I read it wrong it's nine". 0 where none stands. */
function endOfAll(tokens: readonly Token[], at: number, phrases: Phrases): number {
  let until = endOf(tokens, at, phrases);
  if (until && ADDRESSED.test(tokens[until]?.word ?? '')) until++;
  const next = until && endOf(tokens, pastMarks(tokens, until), phrases);
  return next || until;
}

/** First token after the longest of the phrases that starts at `at`, commas stepped over; 0 where none does. */
function endOf(tokens: readonly Token[], at: number, phrases: Phrases): number {
  for (const words of phrases.get(plain(tokens[at])) ?? []) {
    let k = at;
    for (const word of words) {
      while (k > at && tokens[k]?.text === ',') k++;
      if (plain(tokens[k]) !== word) break;
      k++;
      if (word === words.at(-1) && k - at >= words.length) return k;
    }
  }
  return 0;
}

/** A word that a number starts with. */
export const STARTS_NUMBER =
  /^(?:[.\d½¼¾⅛⅜⅝⅞]|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|doce|quince|veint\p{L}+|an?|half|quarter)$)/u;

const pastMarks = (tokens: readonly Token[], at: number) => {
  let k = at;
  while (tokens[k]?.kind === 'mark' && /^[,.…]$/.test(tokens[k]!.text)) k++;
  return k;
};

/**
 * A taking-back phrase at `index`: "no wait", "make that", "scratch that". `until` is the first token after it.
 * Scope `number`: a number follows and replaces the one before. Scope `clause`: what was said before it is gone.
 */
export function takeBackAt(
  tokens: readonly Token[],
  index: number,
): { until: number; scope: 'number' | 'clause' } | null {
  const number = endOfAll(tokens, index, OF_NUMBERS);
  const clause = endOf(tokens, index, OF_CLAUSES);
  const until = pastMarks(tokens, Math.max(number, clause));
  const numbered = STARTS_NUMBER.test(tokens[until]?.word ?? '');
  if (number && numbered) return { until, scope: 'number' };
  if (clause) return { until, scope: 'clause' };
  if (number) return { until, scope: 'number' };
  // A bare "no" between two numbers: "two, no, three bags".
  if (plain(tokens[index]) !== 'no') return null;
  const after = pastMarks(tokens, index + 1);
  const said = tokens[after]?.word ?? '';
  return STARTS_NUMBER.test(said) && !/^an?$/.test(said) ? { until: after, scope: 'number' } : null;
}
