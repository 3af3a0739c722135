import { literal } from '../../../parser/literal.ts';
import { remembered } from '../../../parser/remembered.ts';
import { builtIn } from '../../../parser/trade/index.ts';
import { sameArea, shortName, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { stems } from '../said/verbs.ts';
import { type Board, isWork, type Standing, sharing } from './board.ts';

/** What is looked for on the list. */
export interface Sought {
  words: ReadonlySet<string>;
  area: string | null;
  /** The words as said: where a thing is ("by the sink") tells it from its like. */
  quote: string;
  /** The word that says what the thing is, where it is known. */
  head?: string | null;
}

/** `sure`: the same. `close`: perhaps, worth a question. Neither: new. */
export interface Match {
  item: Standing;
  sure: boolean;
  score: number;
}

/** A wrong join loses work and a wrong split only repeats it, so the upper bar is high. */
const SURE = 0.7;
const CLOSE = 0.5;
/** Two candidates nearer to one another than this cannot be told apart by words. */
const MARGIN = 0.08;
/** A verb, or a flaw that anything may have, tells less than the name of a thing. */
const LIGHT = 0.4;
/** A word told besides counts for less than one of the name. */
const BESIDES = 0.7;

/** "The caulk's done": a word of work that names the thing tells as much as any name. */
const weight = (word: string, head: string) => (isWork(word) && word !== head ? LIGHT : 1);
const weighed = (words: ReadonlySet<string>, room: ReadonlySet<string>, head: string) => {
  let sum = 0;
  for (const word of words) if (!room.has(word)) sum += weight(word, head);
  return sum || 1;
};
const NONE: ReadonlySet<string> = new Set();

/** The word that says what a thing is: "toilet shutoff in half bath" and "toilet shutoff (half bath)" are shutoffs. */
export const headOf = remembered((thing): string =>
  stem(
    shortName(thing)
      .split(/ (?:in|on|at|by|under|behind|of|near|with|over|for|above|below|from|to|is|was)(?: |$)| \(/)[0]!
      .split(' ')
      .at(-1)!,
  ),
);

/** Words that a thing is placed by; "of" only tells a part from its whole. */
const PLACED =
  '(?:by|behind|beside|near|under|above|over|next to|left of|right of|top of|bottom of|outside|inside|at|in|on|from|to|off|with)';

/** Words say where something is by a word of them: "behind the washer". */
const isPlacedBy = (word: string, said: string): boolean =>
  PLACING.test(said) &&
  new RegExp(`\\b${PLACED} (?:the |my |our |that |this |her |his )?(?:[a-z]+ )?${literal(word)}\\b`).test(said);
const PLACING = new RegExp(`\\b${PLACED} `);

/**
 * The same, where the words as said tell more: read as "outlet washer", an "outlet behind the washer" is an outlet, and
 * a "disconnect outside" is no outside.
 */
export function headIn(thing: string, quote: string, area: string | null): string {
  const said = quote.toLowerCase();
  const room = area?.toLowerCase().split(' ') ?? [];
  const words = thing.toLowerCase().split(' ');
  while (words.length > 1) {
    const last = words.at(-1)!;
    const before = said.indexOf(words.at(-2)!);
    const placed = before >= 0 && isPlacedBy(last, said.slice(before));
    if (!placed && !(room.includes(last) && !said.includes(`${words.at(-2)} ${last} `))) break;
    words.pop();
  }
  return headOf(words.join(' '));
}

/**
 * Words in front of the head that name another thing: a "shelf bracket" is no handrail bracket, while a "crusty outlet"
 * may be any outlet.
 */
export const namesAnother = (thing: string, head: string, item: Standing): boolean => {
  const named = thing.toLowerCase().split(' ');
  const at = named.findLastIndex((word) => stem(word) === head);
  return named.slice(0, Math.max(at, 0)).some((word) => {
    const [one] = wordsOf(word);
    if (one === undefined || item.words.has(one) || item.told.has(one) || isWork(one)) return false;
    return builtIn().has(word) && !(item.area !== null && wordsOf(item.area).has(one));
  });
};

/** 0 to 1: how far the words, the area, the place and the numbers agree. */
export function scoreOf(sought: Sought, item: Standing): number {
  if (!sought.words.size || !sameArea(sought.area, item.area) || numbersClash(sought.words, item.words)) return 0;
  const place = item.area ?? sought.area;
  const room = place === null ? NONE : wordsOf(place);
  const mine = item.head;
  const flawed = item.thing === null ? '' : mine;
  const flaw = item.problem === null ? NONE : wordsOf(item.problem);
  let shared = 0;
  let things = 0;
  let named = false;
  let byFlaw = false;
  for (const word of sought.words) {
    // The room is no thing: "both living room windows" is not the living room casing.
    if (room.has(word) && (word !== mine || item.thing === item.area)) continue;
    if (item.words.has(word)) {
      shared += weight(word, flawed);
      const says = word === mine || word === sought.head;
      if (!isWork(word) || word === flawed) things += says || flaw.has(word) ? 2 : 1;
      byFlaw ||= flaw.has(word) && !says;
      named ||= says;
    } else if (item.told.has(word)) {
      shared += weight(word, flawed) * BESIDES;
      if (!isWork(word)) things++;
    }
  }
  // One word in common that names neither of the two things is chance.
  if (!shared || (things < 2 && [...item.words].some((word) => !isWork(word)))) return 0;
  const score = Math.min(1, shared / Math.min(weighed(sought.words, room, flawed), weighed(item.words, room, flawed)));
  if (score < CLOSE) return 0;
  // The same flaw alone may be any thing's: close, unless the room agrees.
  if (byFlaw && !named && things <= 2 && !(item.area && sought.area)) return Math.min(score, 0.55);
  const bonus = item.area && sought.area ? 0.02 : 0;
  return placesClash(sought, item) ? 0 : score + bonus;
}

const isNumber = (word: string) => word >= '0' && word < ':';

/** "Outlet 3" is not "outlet 4". */
export function numbersClash(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  let numbered = false;
  for (const word of a) {
    if (!isNumber(word)) continue;
    if (b.has(word)) return false;
    numbered = true;
  }
  if (numbered) for (const word of b) if (isNumber(word)) return true;
  return false;
}

const PLACE =
  /\b(?:by|behind|beside|near|under|above|over|next to|left of|right of|outside|inside|at|in) (?:the |my |our |that )?([a-z]+(?: [a-z]+)?)/g;
const SIDES = /\b(left|right|front|back|rear|north|south|east|west|upper|lower|top|bottom|first|second|third|other)\b/g;

const MEASURES = stems(
  'two three four five six seven eight nine ten eleven twelve inch inches foot feet ft deep wide long high oclock today first thing',
);
/** How far or how many is no thing: "drilled the railing out two inches" is the railing. */
export const unmeasured = (words: ReadonlySet<string>): ReadonlySet<string> =>
  [...words].some((word) => MEASURES.has(word)) ? new Set([...words].filter((word) => !MEASURES.has(word))) : words;

/** Where words say that something is: sides, and what it stands by; the same words are looked at once. */
const whereIn = remembered((words) => {
  const said = words.toLowerCase();
  return {
    sides: [...said.matchAll(SIDES)].map((m) => m[1]!),
    places: unmeasured(wordsOf([...said.matchAll(PLACE)].map((m) => m[1]!).join(' '))),
  };
});

/** Both say where, and they say different places. */
export function placesClash(sought: Sought, item: Standing): boolean {
  const said = whereIn(sought.quote);
  if (!said.sides.length && !said.places.size) return false;
  const theirs = `${item.task}. ${item.history[0]?.words ?? ''}`;
  const { sides, places: known } = whereIn(theirs);
  if (said.sides.length && sides.length && !said.sides.some((side) => sides.includes(side))) return true;
  // The room is no spot in it: "in the laundry" is "behind the washer" there.
  const room = item.area === null ? NONE : wordsOf(item.area);
  const places = new Set([...said.places].filter((word) => !room.has(word)));
  if (!places.size || !known.size) return false;
  const all = wordsOf(theirs);
  return (
    ![...places].some((word) => all.has(word) || item.told.has(word)) &&
    ![...known].some((w) => wordsOf(sought.quote).has(w))
  );
}

/**
 * The item that is meant, newest first among equals; null where nothing comes near. Two that cannot be told apart are
 * close, not sure, unless either may be meant (`anyOf`).
 */
export function find(
  board: Board,
  sought: Sought,
  { where = ['live'], sure = SURE, anyOf = true, fits = () => true }: Options = {},
): Match | null {
  let best: Standing | null = null;
  let score = 0;
  let second = 0;
  for (const shelf of where)
    for (const item of sharing(board, sought.words, shelf)) {
      if (!fits(item)) continue;
      const scored = scoreOf(sought, item);
      if (scored < CLOSE) continue;
      if (scored > score || (scored === score && item.number > best!.number)) {
        second = score;
        best = item;
        score = scored;
      } else if (scored > second) second = scored;
    }
  if (!best) return null;
  return { item: best, score, sure: score >= sure && (anyOf || score - second >= MARGIN) };
}

interface Options {
  where?: readonly ('live' | 'closed')[];
  sure?: number;
  anyOf?: boolean;
  fits?: (item: Standing) => boolean;
}
