import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { unitNamed } from '../units.ts';
import { PARTS, wordSet } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';

const HOURS = wordSet('one two three four five six seven eight nine ten eleven twelve 1 2 3 4 5 6 7 8 9 10 11 12');
const MINUTES = wordSet('fifteen thirty twenty forty forty-five ten oh fifty five');
const MERIDIEM = wordSet("am pm o'clock oclock");
/** Words that only a time can follow. */
const CUES = wordSet('after before until till til past by since');
/** Words that a time or a place can follow. */
const LOOSE_CUES = wordSet('at around about between');
const DAY_PARTS = wordSet(
  'tomorrow today tonight sharp this monday tuesday wednesday thursday friday saturday sunday noon',
);
const MEETING = wordSet(
  'see meet meeting here there show shows showed come comes coming came start starts started call inspector inspection open opens close closes ' +
    'back leave leaves left quit lunch breakfast dinner tea smoko prestart due window arriving truck lorry shut shuts bus train toolbox site shift gate woke wake rang knocking delivery arrive arrives done finished home knock gone alarm swing swung done plumber driver crew pick pickup picking curtain tide flight flights mass bingo practice rehearsal',
);

const claim = (until: number): Claim => ({ until, kind: 'clock' });

/** 10:30, 4pm, "half past three", "quarter to eight", "by seven thirty", "around ten tomorrow". */
export const clock: ClaimRule = (line, i) => {
  if (
    isDigits(line, i) &&
    line.tokens[i + 1]?.text === ':' &&
    line.tight(i + 2) &&
    /^\d\d$/.test(line.tokens[i + 2]?.text ?? '')
  )
    return claim(withMeridiem(line, i + 3));
  const army = hundredHours(line, i) ?? written(line, i) ?? dotted(line, i) ?? unmarked(line, i);
  if (army) return army;
  // "Nine twenty six by two oh four oh": no hour has that many minutes.
  if ((line.number(i)?.n ?? 0) > 1260 && line.tokens[i]!.kind === 'word') return null;
  return pastHour(line, i) ?? onHour(line, i) ?? toHour(line, i);
};

/** "Eighteen hundred hours": the hour as soldiers say it. */
function hundredHours(line: Line, i: number): Claim | null {
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.n % 100 !== 0 || number.n < 500 || number.n > 2300) return null;
  const said = line.word(number.until - 1) === 'hundred' && line.word(number.until) === 'hours';
  return said && line.word(number.until + 1) !== 'of' ? claim(number.until + 1) : null;
}

/** "Flights at 6.45", "smoko 10 til 10.20": the point of the British hour. */
function dotted(line: Line, i: number): Claim | null {
  if (!/^(?:1?\d|2[0-3])\.[0-5][05]$/.test(line.tokens[i]!.text) || unitAt(line, i + 1, line.number(i))) return null;
  const spanned = /^(?:til|till|until)$/.test(line.word(i - 1));
  return spanned || (hasCue(line, i - 1) && isMet(line, i, 5)) ? claim(i + 1) : null;
}

/** "Got it going by 230": hours and minutes typed without their mark; what is out by so much is measured. */
function unmarked(line: Line, i: number): Claim | null {
  const before = line.word(i - 2);
  const timed =
    line.word(i - 1) === 'by' &&
    /^(?:1[0-2]|[1-9])(?:[03]0|[14]5)$/.test(line.tokens[i]!.text) &&
    line.number(i - 2) === null &&
    !unitNamed(before) &&
    !/^(?:out|off|over|under|short|long|down|up|low|high|wide|deep|proud|shy|back|forward)$/.test(before);
  return timed && endsPhrase(line, i + 1) && !unitAt(line, i + 1, line.number(i)) ? claim(i + 1) : null;
}

/** "Meeting 1030", "start time is 7", "be there for 9", "it's gone four". */
function written(line: Line, i: number): Claim | null {
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.article || unitAt(line, number.until, number)) return null;
  const [before, earlier] = [line.word(i - 1), line.word(i - 2)];
  if (
    /^(?:meeting|inspection|call|start|prestart|toolbox)$/.test(before) &&
    /^(?:[01]?\d|2[0-3])[0-5]\d$/.test(line.word(i))
  )
    return claim(i + 1);
  if (!HOURS.has(line.word(i))) return null;
  // "Nine at night", "between eight and noon".
  const part = [0, 1, 2].map((k) => line.word(number.until + k)).join(' ');
  if (/^in the (?:morning|afternoon|evening|arvo)$/.test(part)) return claim(number.until);
  if (line.word(number.until) === 'at' && line.word(number.until + 1) === 'night') return claim(number.until + 2);
  if (
    line.word(number.until) === 'and' &&
    /^(?:noon|midday|lunch)$/.test(line.word(number.until + 1)) &&
    before === 'between'
  )
    return claim(number.until);
  if (part === 'on the dot') return claim(number.until + 3);
  if (!endsPhrase(line, number.until)) return null;
  const told =
    (/^(?:is|was)$/.test(before) && earlier === 'time') ||
    before === "time's" ||
    (before === 'gone' && /^(?:it's|its|just)$/.test(earlier)) ||
    /^(?:open|opens|close|closes)$/.test(before) ||
    (before === 'for' && /^(?:there|here|in|back)$/.test(earlier) && line.tokens[number.until]?.kind !== 'word');
  return told ? claim(number.until) : null;
}

function withMeridiem(line: Line, at: number): number {
  if (line.word(at) === 'o' && line.word(at + 1) === 'clock') return at + 2;
  if (MERIDIEM.has(line.word(at))) return at + 1;
  const spelled = /^[ap]$/.test(line.word(at)) && line.word(at + 1) === '.' && line.word(at + 2) === 'm';
  return spelled ? at + 3 : at;
}

/** "Half past ten", "a quarter to eight", "ten to five", "twenty past". */
function pastHour(line: Line, i: number): Claim | null {
  const k = line.word(i) === 'a' ? i + 1 : i;
  const word = line.word(k);
  const side = line.word(k + 1);
  // "Around half five", as the British say half past.
  if (
    word === 'half' &&
    k === i &&
    HOURS.has(side) &&
    (hasCue(line, i - 1) || !HALVED.test(line.word(i - 1))) &&
    !unitAt(line, i + 2, line.number(i + 1)) &&
    (endsPhrase(line, i + 2) || /^(?:start|finish|tomorrow|today|lunch|smoko)$/.test(line.word(i + 2))) &&
    !/^(?:by|x|of)$/.test(line.word(i + 2))
  )
    return claim(i + 2);
  if (!/^(?:past|to|after|till|of)$/.test(side)) return null;
  // "A quarter to three eighths": a range on the tape.
  if (PARTS.has(line.word(k + 3)) || line.word(k + 2) === 'a') return null;
  // "Twenty past and nobody's here": the hour is known.
  if (side === 'past' && /^(?:quarter|half|five|ten|twenty)$/.test(word) && isHourKnown(line, k + 2))
    return claim(k + 2);
  const part = word === 'quarter' || (word === 'half' && side === 'past');
  if (part && side === 'to' && line.tokens[k + 2] === undefined) return claim(k + 2);
  const minutes = /^(?:five|ten|twenty|5|10|20|25)$/.test(word) && side !== 'of' && k === i;
  if ((!part && !minutes) || !HOURS.has(line.word(k + 2))) return null;
  if (minutes && side === 'to' && !isTimely(line, i, k + 3) && !isCountedDown(line, i, k)) return null;
  return unitAt(line, k + 3, line.number(k + 2)) ? null : claim(withMeridiem(line, k + 3));
}

/** "Half four he's gone", but "two and half six": what makes it a part of a number. */
const HALVED = /^(?:and|a|an|one|by|x|\d+|the|or|to)$/;

/** "Rang at ten to four", "it's five to four": no range goes down, and "it's" tells the time. */
const isCountedDown = (line: Line, i: number, k: number) =>
  endsPhrase(line, k + 3) &&
  ((line.number(k)?.n ?? 0) > (line.number(k + 2)?.n ?? 0) && line.word(i - 1) !== 'from'
    ? !/^(?:of|on|by|x|wide|deep|long|high|off|each|inside|left|more)$/.test(line.word(k + 3))
    : /^(?:it's|its|already|nearly|almost)$/.test(line.word(i - 1)) && !/^(?:of|on|by|x)$/.test(line.word(k + 3)));

const isHourKnown = (line: Line, at: number) => {
  const next = line.tokens[at];
  return next === undefined || next.kind === 'break' || /^(?:[,.;!?]|and|so|now|already|when|but)$/.test(next.word);
};

function onHour(line: Line, i: number): Claim | null {
  if (!HOURS.has(line.word(i))) return null;
  const minutes = MINUTES.has(line.word(i + 1)) && line.tokens[i]!.kind === 'word';
  const number = line.number(i);
  if (number?.d !== 1) return null;
  let until = minutes ? Math.max(i + 2, number.until) : i + 1;
  if (minutes && line.word(i + 1) === 'oh' && line.tokens[i + 2]) until = Math.max(until, i + 3);
  if (MERIDIEM.has(line.word(until)) || withMeridiem(line, until) > until) return claim(withMeridiem(line, until));
  if (line.word(until) === 'sharp' && !unitAt(line, until, number)) return claim(until + 1);
  if ((line.word(until) === 'ish' && line.word(i - 1) !== '/') || line.word(until) === 'noon') return claim(until + 1);
  if (!minutes && number.until > until) return null;
  // "By seven, seven thirty at the latest", "between seven and seven thirty": the hour again, more closely.
  const between = line.word(i - 1) === 'between' && line.word(i + 1) === 'and' && HOURS.has(line.word(i + 2));
  if (between && !minutes && MINUTES.has(line.word(i + 3)) && endsPhrase(line, i + 4)) return claim(until);
  if (minutes && /^(?:,|or|and)$/.test(line.word(i - 1)) && HOURS.has(line.word(i - 2)) && hasCue(line, i - 3))
    return claim(until);
  return isTimely(line, i, until) ? claim(until) : null;
}

/** "Two to four pm", "8 to 4:30": the hour that a span of the day starts with. */
function toHour(line: Line, i: number): Claim | null {
  if (!HOURS.has(line.word(i)) || !/^(?:to|till|til|until|-)$/.test(line.word(i + 1)) || !HOURS.has(line.word(i + 2)))
    return null;
  const minutes = line.tokens[i + 3]?.text === ':' && line.tight(i + 4);
  const spanned = /^(?:is|'s|from)$/.test(line.word(i - 1)) && isMet(line, i, 5) && endsPhrase(line, i + 3);
  if (line.word(i - 1) === 'from' && /^(?:till|til|until)$/.test(line.word(i + 1)) && endsPhrase(line, i + 3))
    return claim(i + 3);
  if (spanned && !unitAt(line, i + 3, line.number(i + 2))) return claim(i + 3);
  return minutes || MERIDIEM.has(line.word(i + 3)) ? claim(i + 1) : null;
}

const SUBJECTS = wordSet("i i'm i'll we we're we'll he he's he'll she she's she'll they they're they'll");

const hasCue = (line: Line, at: number) => CUES.has(line.word(at)) || LOOSE_CUES.has(line.word(at));

const EVENTS = wordSet('before after when till until unless every each sharp finish on saturdays sundays');

/** A meeting, a meal or a shift is told of before it. */
function isMet(line: Line, i: number, reach: number): boolean {
  for (let k = i - 2; k >= i - reach && k >= 0 && line.tokens[k]!.kind !== 'break'; k--)
    if (MEETING.has(line.bare(k))) return true;
  return false;
}

/** "Battens at three thirty". */
const SPACED = wordSet(
  'battens studs joists rafters noggins dwangs screws nails ties brackets hangers purlins posts pickets balusters clips',
);

/** "Set at one twenty five": of a dial. */
const HELD = /^(?:set|holding|held|reads?|reading|runs?|running|sits?|sitting|kept|cranked|dial+ed|maxed|pegged)$/;

/** "After nine", "by seven thirty in the morning", "meet at ten": not "after two coats", "at four inches". */
function isTimely(line: Line, i: number, until: number): boolean {
  const before = line.word(i - 1);
  if (before === 'from' && /^(?:down|up|went|dropped|rose|fell|gone|came)$/.test(line.word(i - 2))) return false;
  if (before === 'at' && (HELD.test(line.word(i - 2)) || SPACED.has(line.word(i - 2)))) return false;
  const cue = CUES.has(before);
  const loose = LOOSE_CUES.has(before) || (before === 'and' && line.word(i - 3) === 'between');
  if (unitAt(line, until, line.number(i))) return false;
  const next = line.tokens[until];
  // "Leave about six to eight inches".
  const top = /^(?:to|or|-)$/.test(line.word(until)) ? line.number(until + 1) : null;
  if (top && unitAt(line, top.until, top)) return false;
  if (next?.kind === 'mark' && /^["'/%\-–x×½¼¾#]$/.test(next.text)) return false;
  const daily =
    DAY_PARTS.has(line.word(until)) ||
    (/^in$/.test(line.word(until)) && /^(?:morning|afternoon|evening)$/.test(line.word(until + 2)));
  if (daily && (cue || loose || /^(?:for|til|say)$/.test(before))) return true;
  if (/^(?:by|x)$/.test(line.word(until)) || (!cue && !loose && before !== 'from')) {
    // "Between one and three": the first hour has its cue before it, the second behind.
    return false;
  }
  if (before === 'by' && (line.number(i - 2) || unitNamed(line.word(i - 2)))) return false;
  const halfHour = until > i + 1 && /^(?:fifteen|thirty|five)$/.test(line.word(until - 1));
  const met = isMet(line, i, halfHour ? 9 : 5);
  // "At two I'm leaving", "around three the truck comes", "eleven thirty works".
  if (
    loose &&
    before !== 'about' &&
    (SUBJECTS.has(line.word(until)) || (line.word(until) === 'the' && MEETING.has(line.word(until + 2))))
  )
    return true;
  if (before === 'at' && DAY_PARTS.has(line.word(i - 2))) return endsPhrase(line, until);
  if (halfHour && /^(?:it|it's|its)$/.test(before) && /^(?:already|and|now|so)?$/.test(line.word(until))) return true;
  if (loose && halfHour && /^(?:it's|its)$/.test(line.word(i - 2))) return true;
  if (before === 'from' && halfHour && line.tokens[until]?.kind !== 'word') return true;
  if (loose) return (met || halfHour) && (endsPhrase(line, until) || (met && EVENTS.has(line.word(until))));
  return endsPhrase(line, until) && (before !== 'by' || met || until > i + 1);
}
