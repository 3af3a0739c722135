import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import { unitNamed } from './units.ts';
import { tellsLength, wordSet } from './words.ts';

/** Neighbouring readings that belong together, tied: `60 by 32`, `24 to 26`, `36 plus or minus 1/8`, "two on each of the four". */
export function tie(line: Line, drafts: readonly Draft[]): void {
  let id = 0;
  for (let i = 0; i + 1 < drafts.length; i++) {
    const a = drafts[i]!;
    const kind = a.group ? null : jointOf(line, a, drafts[i + 1]!);
    if (!kind) continue;
    let last = i + 1;
    while (
      kind === 'pair' &&
      last - i < 3 &&
      drafts[last + 1] &&
      jointOf(line, drafts[last]!, drafts[last + 1]!) === kind
    )
      last++;
    id++;
    for (let k = i; k <= last; k++) drafts[k]!.group = { kind, id };
    i = last;
  }
}

type Kind = NonNullable<Draft['group']>['kind'];

const BY = wordSet('by x ×');
const SIDES = wordSet('wide long tall high deep thick w h l d');
const FROM = wordSet('from between');

function jointOf(line: Line, a: Draft, b: Draft): Kind | null {
  const gap = b.from - a.until;
  // "Eight ten feet", "couple three sheets".
  const next = gap === 0 && a.unitFrom !== 'said' && a.d < 3 && b.d === 1 && a.inWords && b.inWords && b.unit !== null;
  const [low, high] = [a.n / a.d, b.n / b.d];
  const many = /(?:[^sr]s|feet|boxes)$/.test(line.word(b.until - 1));
  if (next && many && high > low && high <= low + 5 && high <= 1.5 * low) return 'range';
  if (gap < 1 || gap > 7) return null;
  const words: string[] = [];
  for (let k = a.until; k < b.from; k++) words.push(line.word(k));
  if (isBy(words)) return a.unit?.kind === 'count' || b.rule === 'quantity/times' ? null : 'pair';
  const joint = words.join(' ');
  if (/^(?:plus or minus|plus minus|give or take|\+ ?\/ ?-|± ?)$/.test(joint)) return 'plusMinus';
  if (
    /(?:^| )(?:each|every one) (?:of|for)(?: the| those| these| my| our| them)?$/.test(joint) ||
    joint === 'apiece for the'
  ) {
    return b.unit === null && a.n > 0 ? 'eachOf' : null;
  }
  return isRange(line, a, b, joint) ? 'range' : null;
}

/** "By", "wide by", "-by-". */
function isBy(words: readonly string[]): boolean {
  const bare = words.filter((w) => w !== '-' && !SIDES.has(w));
  return bare.length === 1 && BY.has(bare[0]!);
}

/** Two of a kind, the smaller first, not too far apart: "cut four to thirty six inches" is no range. */
function isRange(line: Line, a: Draft, b: Draft, joint: string): boolean {
  const opened = FROM.has(line.word(a.from - 1));
  if (!/^(?:to|-|–|or|or maybe|maybe|or like|to maybe|,)$/.test(joint) && !(opened && joint === 'and')) return false;
  const kind = (d: Draft) => (d.unitFrom === 'said' ? d.unit?.kind : undefined);
  if (kind(a) && kind(b) && kind(a) !== kind(b)) return false;
  if (a.unitFrom === 'said' && b.unit === null && joint !== '-' && joint !== 'to' && joint !== 'or') return false;
  const ratio = (b.n * a.d) / (b.d * a.n);
  if (joint === ',') return a.unit === null && a.inWords && b.inWords && b.unit !== null && ratio > 1 && ratio <= 1.5;
  if (joint === '-' && line.tokens[a.until]!.spaced !== line.tokens[b.from]!.spaced) return false;
  if (/^[-–]$/.test(joint) && countsLengths(line, a, b, ratio)) return false;
  const sameUnit = a.unit === b.unit || kind(a) === undefined || kind(b) === undefined;
  return a.n >= 0 && (!sameUnit || (ratio > 1 && (opened || ratio <= 4 || a.unitFrom !== 'none')));
}

/** "3 - 8 footers", "3-8' boards": so many boards, each so long. "2-3 inch gaps" is a range all the same. */
const countsLengths = (line: Line, a: Draft, b: Draft, ratio: number) =>
  a.unit === null &&
  a.d === 1 &&
  (/^footers?$/.test(line.word(b.until - 1)) ||
    isListed(line, a, b, ratio) ||
    (ratio >= 2 && b.unit?.unit === 'ft' && /[^s']s$/.test(line.word(b.until)) && !endsPhrase(line, b.until)));

/** `24 - 80# bags`, `4 - 6" tees`: in a typed list the count stands apart from its goods' size. */
const isListed = (line: Line, a: Draft, b: Draft, ratio: number) =>
  line.tokens[a.until]!.spaced &&
  !a.inWords &&
  ratio >= LEAST_APART &&
  b.unitFrom === 'said' &&
  /^(?:length|weight|volume|current)$/.test(b.unit!.kind) &&
  b.unit!.unit !== 'ft' &&
  /[^s']s$/.test(line.word(b.until)) &&
  !/^(?:gaps|pieces|centers|centres|increments|intervals|strips)$/.test(line.word(b.until));
const LEAST_APART = 1.5;

/** One unit said last, or first, covers the group; a unit that is only implied gives way to it. */
export function shareUnits(line: Line, drafts: readonly Draft[]): void {
  for (let i = 0; i < drafts.length; ) {
    const group = drafts[i]!.group;
    let end = i + 1;
    while (group && drafts[end]?.group?.id === group.id) end++;
    if (group && group.kind !== 'eachOf') share(line, drafts.slice(i, end));
    i = end;
  }
}

function share(line: Line, members: readonly Draft[]): void {
  const said = members.findLast((m) => m.unitFrom === 'said') ?? members.find((m) => m.unitFrom === 'implied');
  const unit = said?.unit;
  if (!unit) return;
  const told = members.some((m) => m.rule === 'quantity/feet-inches');
  if (said.unitFrom === 'implied' && !told && members[0]!.group!.kind === 'pair' && isRoom(line, members[0]!.from)) {
    for (const m of members) Object.assign(m, { unit: unitNamed('ft'), unitFrom: 'implied' });
    return;
  }
  // "Eight by four sheets", "2400 x 1200 sheets": how large they are, not how many.
  if (members[0]!.group!.kind === 'pair' && unit.kind === 'pack') {
    for (const m of members)
      if (m.unitFrom === 'said') Object.assign(m, { unit: null, unitFrom: 'none', until: m.bareUntil ?? m.until });
    return;
  }
  // `600x300 x 14m2`: the tile's sides, then how much of it.
  if (members[0]!.group!.kind === 'pair' && /^(?:area|volume|weight)$/.test(unit.kind)) return;
  // "Three metre by six twenty": the bare number is in millimetres.
  const isThousandfold = (m: Draft) => unit.unit === 'm' && m.unitFrom === 'none' && m.n > 50 * m.d;
  const millimetres = members.some(isThousandfold);
  const thousandfold = (m: Draft) => isThousandfold(m) || (millimetres && m.unitFrom === 'none' && m.n >= 10 * m.d);
  // "Eight foot by two": feet said first do not reach over to a bare number.
  const backwards = members.at(-1)!.unitFrom === 'said' || unit.unit !== 'ft';
  // "Eight by ten by four inches thick": a pad's sides are in feet.
  const thick = /^(?:thick|deep)$/.test(line.word(members.at(-1)!.until));
  if (members.length > 2 && thick && members.filter((m) => m.unitFrom === 'said').length === 1) return;
  // `2x10x14'`: a board's section is nominal, only its length is in feet.
  if (members.length > 2 && unit.unit === 'ft' && members.filter((m) => m.unitFrom === 'said').length === 1) return;
  for (const m of members) {
    if (m.unitFrom === 'said' || (m.unitFrom === 'none' && !backwards)) continue;
    if (m.unitFrom === 'implied' && unit.kind !== 'length') continue;
    if (m.unitFrom === 'implied' && unit.unit === 'ft' && m.group!.kind !== 'range') continue;
    if (thousandfold(m)) continue;
    if (members.length === 2 && isFeetToo(said!, m)) {
      Object.assign(m, { unit: unitNamed('ft'), unitFrom: 'shared' });
      // A shelf may be twelve inches deep.
      if (m.n >= 12) m.doubt = `${m.n} ft or ${m.n} in?`;
      continue;
    }
    m.unit = unit;
    m.unitFrom = m === said ? m.unitFrom : 'shared';
  }
}

const ROOMS = wordSet('room bedroom kitchen garage den office basement hallway porch patio deck barn shed shop attic');

/** "Bedroom's eleven by twelve and a half": in feet. */
const isRoom = (line: Line, from: number) =>
  [1, 2].some((back) => ROOMS.has(line.bare(from - back))) && tellsLength(line.word(from - 1));

/** "Five foot six by seven": a small whole number beside feet and inches is more likely feet. */
const isFeetToo = (said: Draft, m: Draft) =>
  said.rule === 'quantity/feet-inches' &&
  said.group!.kind === 'pair' &&
  m.rule !== said.rule &&
  m.d === 1 &&
  m.n >= 3 &&
  m.n <= MOST_FEET;

/** Shelves, counters and splashes are deeper in inches. */
const MOST_FEET = 16;

/** "Fifteen, maybe fifty": dictation takes one for the other, so both are asked about. */
export function doubtTeens(line: Line, drafts: readonly Draft[]): void {
  for (let i = 0; i + 1 < drafts.length; i++) {
    const [a, b] = [drafts[i]!, drafts[i + 1]!];
    const joined = b.from - a.until <= 6 && /^(?:maybe|or)$/.test(line.word(b.from - 1));
    const confused = a.d === 1 && b.d === 1 && a.n > 12 && a.n < 20 && b.n === (a.n - 10) * 10;
    if (joined && confused) a.doubt = b.doubt = `${a.n} or ${b.n}?`;
  }
}
