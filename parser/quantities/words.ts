/** Number words, English and the Spanish that crews mix in. */
export const ONES: ReadonlyMap<string, number> = new Map(
  (
    'one:1 two:2 three:3 four:4 five:5 six:6 seven:7 eight:8 nine:9 ten:10 eleven:11 twelve:12 thirteen:13 fourteen:14 ' +
    'fifteen:15 sixteen:16 seventeen:17 eighteen:18 nineteen:19 zero:0 nought:0 naught:0 uno:1 dos:2 tres:3 cuatro:4 cinco:5 seis:6 ' +
    'siete:7 ocho:8 nueve:9 diez:10 doce:12 trece:13 catorce:14 quince:15 dieciséis:16 dieciseis:16 diecisiete:17 dieciocho:18 diecinueve:19 veintiuno:21 veintiún:21 veintiun:21 ' +
    'veintidós:22 veintidos:22 veintitrés:23 veintitres:23 veinticuatro:24 veinticinco:25 veintiséis:26 veintiseis:26 veintisiete:27 veintiocho:28 veintinueve:29 cien:100'
  )
    .split(' ')
    .map(pairOf),
);

export const TENS: ReadonlyMap<string, number> = new Map(
  'twenty:20 thirty:30 forty:40 fourty:40 fifty:50 sixty:60 seventy:70 eighty:80 ninety:90 veinte:20 treinta:30 cuarenta:40 cincuenta:50 sesenta:60 setenta:70 ochenta:80 noventa:90'
    .split(' ')
    .map(pairOf),
);

/** Figures and the English words for them, up to ninety. */
export const IN_WORDS: ReadonlyMap<string, string> = new Map(
  'one two three four five six seven eight nine ten eleven twelve thirteen fifteen sixteen twenty thirty fifty sixty ninety'
    .split(' ')
    .map((word) => [String(ONES.get(word) ?? TENS.get(word)), word]),
);

/** What one is divided into. */
export const PARTS: ReadonlyMap<string, number> = new Map(
  (
    'half:2 halves:2 halfs:2 third:3 thirds:3 quarter:4 quarters:4 fourth:4 fourths:4 fifth:5 fifths:5 eighth:8 eighths:8 ' +
    'tenth:10 tenths:10 sixteenth:16 sixteenths:16 medio:2 media:2 tercio:3 tercios:3 cuarto:4 cuartos:4 octavo:8 octavos:8 dieciseisavo:16 dieciseisavos:16 treintaidosavo:32 treintaidosavos:32'
  )
    .split(' ')
    .map(pairOf),
);

/** Parts as dictation clips them: "five eights", "and three eight". */
export const CLIPPED_PARTS: ReadonlyMap<string, number> = new Map([
  ['eight', 8],
  ['eights', 8],
  ['sixteen', 16],
  ['sixteens', 16],
]);

/** Parts that are also places in a row ("the third", "the fifth"): they need a count or a unit. */
export const ORDINAL_PARTS: ReadonlySet<string> = new Set('third fourth fifth eighth tenth sixteenth'.split(' '));

export const GLYPHS: ReadonlyMap<string, readonly [number, number]> = new Map(
  '¼:1/4 ½:1/2 ¾:3/4 ⅐:1/7 ⅑:1/9 ⅒:1/10 ⅓:1/3 ⅔:2/3 ⅕:1/5 ⅖:2/5 ⅗:3/5 ⅘:4/5 ⅙:1/6 ⅚:5/6 ⅛:1/8 ⅜:3/8 ⅝:5/8 ⅞:7/8'
    .split(' ')
    .map((row) => {
      const [glyph, part] = row.split(':');
      const [n, d] = part!.split('/');
      return [glyph!, [Number(n), Number(d)]];
    }),
);

/** "Two by fours": said of lumber, only behind "by". */
export const PLURALS: ReadonlyMap<string, number> = new Map(
  'ones:1 twos:2 threes:3 fours:4 fives:5 sixes:6 sevens:7 eights:8 nines:9 tens:10 twelves:12 fourteens:14 fifteens:15 sixteens:16 eighteens:18 twenties:20 thirties:30 forties:40 fifties:50'
    .split(' ')
    .map(pairOf),
);

function pairOf(row: string): [string, number] {
  const [word, n] = row.split(':');
  return [word!, Number(n)];
}

/** How a part on the tape leans: "a strong sixteenth". */
export const LEANS: ReadonlySet<string> = new Set('strong heavy fat full light scant shy skinny even'.split(' '));

/** A set out of words parted by blanks. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** What stands between the sides of a size. */
export const isBy = (word: string): boolean => /^(?:by|x|×)$/.test(word);

const TELLS_LENGTH = /^(?:is|are|was|at|about|exactly|runs?|spans?|measures?|measured|comes|came)$|'s$/;

/** What a length is told by: "the wall's", "the opening measures", "it came". */
export const tellsLength = (word: string): boolean => TELLS_LENGTH.test(word);
