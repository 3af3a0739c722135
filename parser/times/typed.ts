/** Words of days as thumbs shorten them, the whole word first. */
const SHORTENED: ReadonlyMap<string, string> = new Map(
  [
    'today tday tdy',
    'tonight tonite tnight',
    'tomorrow tmrw tmw tmr tmro tmoro tmrow tomo tomoz tmz tomorra tomora',
    'yesterday yday yest ystrday',
    "today's todays",
    "tomorrow's tomorrows",
    "yesterday's yesterdays",
    "tonight's tonights",
    'since sinse sence sins',
    'overnight overnite',
    'week wk',
    'weeks wks',
    'weekend wknd wkend weekand',
    'fortnight fortnite',
    'next nxt',
    'thursday thursd thrs',
    'friday frid',
    'saturday satdy',
    'march mrch',
    'august agust',
    'thanksgiving thxgiving',
    'christmas xmas',
  ].flatMap((row) => {
    const [whole, ...typed] = row.split(' ') as [string, ...string[]];
    return typed.map((word) => [word, whole] as const);
  }),
);

const LONG_NAMES =
  'monday tuesday wednesday thursday friday saturday sunday today tonight tomorrow yesterday weekend january february september october november december thanksgiving christmas'.split(
    ' ',
  );
/** Words that differ from a day by a letter and are none. */
const OTHERS = /^(?:sundry|sundae|toddy|toady|friary|.*(?:days|ends|nights|'s))$/;
/** Two letters may be wrong in these; in the others, two make another word: "christian". */
const LONGEST = /^(?:wednesday|thursday|saturday|tomorrow|yesterday)$/;
const LEAST_LETTERS = 6;

/** How many letters were left out, put in, changed or swapped with their neighbour, counted up to `most`. */
function slips(typed: string, whole: string, most: number): number {
  if (Math.abs(typed.length - whole.length) > most) return most + 1;
  let [before, above] = [[] as number[], Array.from({ length: whole.length + 1 }, (_, k) => k)];
  for (let i = 1; i <= typed.length; i++) {
    const row = [i];
    for (let k = 1; k <= whole.length; k++) {
      const same = typed[i - 1] === whole[k - 1];
      let least = Math.min(above[k]! + 1, row[k - 1]! + 1, above[k - 1]! + (same ? 0 : 1));
      if (i > 1 && k > 1 && typed[i - 1] === whole[k - 2] && typed[i - 2] === whole[k - 1])
        least = Math.min(least, before[k - 2]! + 1);
      row.push(least);
    }
    [before, above] = [above, row];
  }
  return above[whole.length]!;
}

/** The name of a day or month of which a word is a slip of the thumb: "thrusday", "tomarrow", "novmber". */
function meantDay(word: string): string | undefined {
  if (word.length < 4 || OTHERS.test(word) || LONG_NAMES.includes(word)) return undefined;
  return LONG_NAMES.find((whole) => {
    const most = LONGEST.test(whole) && word.length >= LEAST_LETTERS ? 2 : 1;
    return word[0] === whole[0] && word.length >= whole.length - most && slips(word, whole, most) <= most;
  });
}

const PLAIN_VOWELS: Readonly<Record<string, string>> = { á: 'a', é: 'e', í: 'i', ó: 'o', ú: 'u' };

/** Every word of every note is asked for, and most of them again and again. */
const known = new Map<string, string>();

/** The word that the rules of days know: whole, and without the stresses that Spanish writes and phones leave out. */
export function dayWord(word: string): string {
  const before = known.get(word);
  if (before !== undefined) return before;
  const whole = SHORTENED.get(word) ?? meantDay(word) ?? word.replace(/[áéíóú]/g, (vowel) => PLAIN_VOWELS[vowel]!);
  if (known.size < MOST_KNOWN) known.set(word, whole);
  return whole;
}

/** A server reads notes for months: what it keeps of their words has an end. */
const MOST_KNOWN = 20_000;
