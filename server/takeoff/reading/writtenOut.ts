/** Words of take-offs that hurried thumbs leave the vowels out of. */
const TRADE =
  'about already around back baluster balusters baseboard basement batt batten battens batts before bedroom bedrooms board boards bottom bracket brackets bucket buckets bundle bundles cable carton cartons casing ceiling ceilings center centers circuit closet coat coats concrete copper coupling couplings course courses cover covers deck decking door doors drywall elbow elbows every extra fence floor flooring floors footer footers footing footings front gallon gallons garage gravel grout hallway hanger hangers hardwood insulation joist joists just kitchen laminate leading ledger leftover length lengths linear long mortar mud nail nails over panel panels paver pavers picket pickets piece pieces plank planks plate plates plywood post posts precut primer rafter rafters rail rails ridge roll rolls screw screws sealant section sections sheathing sheet sheets shingle shingles siding slope spacing spindle spindles square squares starter stick sticks strip strips stud studs thinset tile tiles treated trim tube tubes underlayment upstairs vinyl wall walls waste window windows yesterday'.split(
    ' ',
  );

/** Short forms that leave out more than vowels. */
const SHORT: Readonly<Record<string, string>> = {
  trk: 'truck',
  rnd: 'round',
  thk: 'thick',
  lft: 'left',
  bd: 'board',
  bds: 'boards',
  ctrs: 'centers',
  dn: 'down',
  stix: 'sticks',
  ret: 'return',
  frm: 'from',
  gals: 'gallons',
  yd: 'yard',
  yds: 'yards',
  bals: 'balusters',
  lin: 'linear',
  pcs: 'pieces',
  pallings: 'palings',
};

/** The first letter and the consonants, doubled ones once: `bndl` of `bundle` as of `bndl`. */
const bones = (word: string) =>
  word[0] +
  word
    .slice(1)
    .replace(/[aeiou]/g, '')
    .replace(/(.)\1+/g, '$1');

const BY_BONES = new Map<string, string[]>();
for (const word of TRADE) BY_BONES.set(bones(word), [...(BY_BONES.get(bones(word)) ?? []), word]);

/** Letters of one in the order in which they stand in the other. */
function within(short: string, long: string): boolean {
  let at = 0;
  for (const letter of long) if (letter === short[at]) at++;
  return at === short.length;
}

/**
 * `shts`, `ledgr`, `footrs`: a word that has all the consonants of one trade word, and fewer vowels. With vowels of its own
 * it is long enough to be no other word.
 */
function vowelsLeftOut(word: string): string | null {
  const bare = !/[aeiou]/.test(word.slice(1));
  if (word.length < (bare ? 3 : 5)) return null;
  const meant = (BY_BONES.get(bones(word)) ?? []).filter((w) => w.length > word.length && within(word, w));
  return meant.length === 1 && !TRADE.includes(word) ? meant[0]! : null;
}

const UNITS = 'one|two|three|four|five|six|seven|eight|nine';
const TEENS = 'ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen';
const TENS = 'twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety';
const PACK = 'box|case|carton|pack|packet|bag|bundle|bucket|tub|roll|sheet';

/** "Eight in a box": "in" is no inch there. */
const IN_A_PACK = new RegExp(
  `\\b((?:(?:${TENS})[- ])?(?:${UNITS}|${TEENS})|${TENS}|\\d+) in (?:a|an|each|every|the|one) (${PACK})\\b`,
  'gi',
);
/** "Twenty four eight to a box": two numbers that can be no one. */
const RUN_TOGETHER = new RegExp(
  `\\b(${UNITS}|${TEENS}) ((?:(?:${TENS})[- ])?(?:${UNITS}|${TEENS})|${TENS}|\\d+)(?= (?:to|per) (?:a|an|the|each) (?:${PACK})\\b)`,
  'gi',
);

/** "Two by twos inch and a half": the section in the plural, then a size. */
const SECTION_THEN_SIZE =
  /\b((?:by|x) (?:twos|threes|fours|sixes|eights|tens|twelves)) (?=(?:an? |one )?(?:inch|\d|one|two|three|four|five|six|seven|eight|nine|ten|twelve)\b)/gi;

/** "14x18 3/4 t&g": a side, and how thick the sheet is. */
const SIDE_THEN_THICK =
  /((?:x|by) ?\d+) (\d\/\d{1,2})(?=["”]?(?: inch)? (?:t ?& ?g|tongue|ply|plywood|osb|cdx|drywall|sheet ?rock|board|rock|subfloor)\b)/gi;

/** "10 by 11 three by fives": sides of the place, then of the sheet. */
const PLACE_THEN_SHEET = new RegExp(
  `((?:x|by) (?:${UNITS}|${TEENS}|${TENS}|\\d+)) ((?:two|three|four|five|2|3|4|5) (?:x|by) (?:fours|fives|sixes|eights|nines|tens|twelves))\\b`,
  'gi',
);

/** "Seven full days". */
const FULL_DAYS = new RegExp(
  `\\b(${UNITS}|${TEENS}|${TENS}|\\d+) (?:full|whole|solid|clear|good) (days?|hours?|hrs|weeks?)\\b`,
  'gi',
);

/** A note with hurried typing written out, and numbers that only their neighbours tell apart set apart. */
export const writtenOut = (text: string): string =>
  text
    .replace(/(?<![\w'’-])[a-z]{2,}(?![\w'’-])/gi, (word) => {
      const low = word.toLowerCase();
      return SHORT[low] ?? vowelsLeftOut(low) ?? word;
    })
    .replace(/(?<=[a-z] )r (?=\d+ ?x|(?:on|in|at|up|down|all|the|already|there|here|not|run|going|done)\b)/g, 'are ')
    .replace(SIDE_THEN_THICK, '$1, $2')
    .replace(PLACE_THEN_SHEET, '$1, $2')
    .replace(/\b(\d{1,2}) ?oc\b/gi, '$1 on center')
    .replace(/\bkit(?= (?:does|covers|is good|per)\b)/gi, 'kits')
    .replace(SECTION_THEN_SIZE, '$1, ')
    .replace(FULL_DAYS, '$1 $2')
    .replace(IN_A_PACK, '$1 to a $2')
    .replace(RUN_TOGETHER, '$1, $2');
