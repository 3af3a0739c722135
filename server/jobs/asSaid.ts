import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { readTimes } from '../../parser/times/index.ts';
import { wordsOf } from '../../parser/trade/likeness.ts';
import type { Decision, Done, Fact, FollowUp, Material, Problem } from '../../parser/types.ts';
import { tellsDrop } from './workTold.ts';

const NUMBERS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const NUMBER = `\\d+|${NUMBERS.slice(1).join('|')}`;
export const numberOf = (word: string): number | null =>
  /^\d+$/.test(word)
    ? Number(word)
    : NUMBERS.indexOf(word.toLowerCase()) > 0
      ? NUMBERS.indexOf(word.toLowerCase())
      : null;

/** A fact as its whole note means it, of another kind where need be; null where the note means no such thing. */
export function asSaid(fact: Fact, text: string, facts: readonly Fact[], at: string): Fact | null {
  switch (fact.kind) {
    case 'material':
      return goodsAsSaid(fact, text, facts) ?? fact;
    case 'done':
      return ARRIVES.test(fact.quote.toLowerCase()) ? null : (appointment(fact, text, at) ?? fact);
    case 'followUp':
      if (STAYS.test(fact.quote.toLowerCase()) || runsOn(fact, text, facts)) return null;
      if (onlyWants(fact, facts) || (tellsDrop(fact.quote) && !dropped(fact))) return null;
      return dropped(fact) ?? alreadyDone(fact, text, facts) ?? renewed(fact);
    case 'problem':
      if (HOLDS.test(text.slice(fact.end).toLowerCase()) || HOLDS_IN.test(fact.quote.toLowerCase())) return null;
      if (isSoldOut(fact)) return null;
      if (ALL_RIGHT.test(fact.defect) && !/\b(?:not|too|n't|never)\b|n't\b/.test(fact.quote)) return null;
      return dropped(fact) ?? putIn(fact) ?? takenOut(fact) ?? found(fact);
    default:
      return fact;
  }
}

/** "Screen came in" is goods that arrived. */
const ARRIVES = /\b(?:came|comes|coming) in\b/;
/** "Brace stays on till saturday": nothing to do. */
const STAYS = /\b(?:stays?|remains?) (?:on|in|off|up|down|there|put|open|closed)\b/;
const ALL_RIGHT = /\b(?:fine|good|great|perfect|okay|ok|quiet|smooth|right)$|^(?:good|plenty|right on)\b(?![ -]siz)/;

/** "Needs new too", "wants a new kit": what is renewed is replaced. */
const renewed = (fact: FollowUp): FollowUp =>
  /^new \w/.test(fact.task) ? { ...fact, task: `replace ${fact.task.slice(4)}` } : fact;

/** "New baluster stained and in": in place, and no flaw. */
const putIn = (fact: Problem): Done | null =>
  /\b\w+ed (?:and|&|\+|n) (?:in|on|up|set|hung|done)$/.test(fact.quote.toLowerCase())
    ? { ...spanOf(fact), kind: 'done', task: `install ${fact.thing}`, who: null }
    : null;

/** "Stiff but it holds": told, and nothing to do about it. */
const STILL_GOOD =
  ",? but (?:it |it's |its |they |that |still )*(?:holds?|works?|fine|ok|okay|good|usable|serviceable)";
const HOLDS = new RegExp(`^${STILL_GOOD}\\b`);
const HOLDS_IN = new RegExp(`\\w${STILL_GOOD}$`);
/** What a store does not have is no flaw of the job. */
const isSoldOut = ({ defect, quote }: Problem) =>
  (/^no\b/.test(defect) && SOLD_OUT.test(quote)) || OUT_OF_GOODS.test(quote.toLowerCase());
const OUT_OF_GOODS =
  /\b(?:they|he|she|store|yard|counter|supplier|supply house)(?:'re|'s| is| are| was| were| had)? (?:all |clean |just )?(?:run |sold )?out of (?!square|plumb|level|line|true|round|whack|order|place)/;
const SOLD_OUT = /\b(?:on the shelf|in stock|at the (?:yard|store|supply house|counter)|carry|carries)\b/;

const TAKEN_OUT = /\b(?:cut|busted|torn|tore|ripped|pulled|knocked|dug|chipped|scraped) (?:out|off|up|down)$/;

/** "Wet boards cut out", "the slab's busted out": the flaw is what was done to it. */
function takenOut(fact: Problem): Done | null {
  if (fact.state !== 'open' || !TAKEN_OUT.test(fact.quote.toLowerCase().trim())) return null;
  const thing = fact.thing.replace(TAKEN_OUT, '').trim();
  return { ...spanOf(fact), kind: 'done', task: `remove ${thing || fact.thing}`, who: null };
}

/** "Still need the other box": goods to get, which the order holds. */
const onlyWants = (fact: FollowUp, facts: readonly Fact[]): boolean =>
  /^(?:need|want|short)\b/.test(fact.task) &&
  facts.some((f) => f.kind === 'material' && f.status === 'need' && f.start < fact.end && fact.start < f.end);

/** A single word that goes straight on from another fact's is no work of its own: "a california patch". */
const runsOn = (fact: FollowUp, text: string, facts: readonly Fact[]): boolean =>
  !/\s/.test(fact.quote) &&
  facts.some((f) => f !== fact && f.end <= fact.start && /^ ?$/.test(text.slice(f.end, fact.start)));

/** "Lock was just out of line": told of what is past, so it was put right. */
const found = (fact: Problem): Problem =>
  fact.state === 'open' && /\b(?:was|were) (?:just|only)\b/.test(fact.quote.toLowerCase())
    ? { ...fact, state: 'fixed' }
    : fact;

const DROPS =
  /^(?:(?:yeah|ok|okay|so|and|then|oh|actually)[, ]+)*(?:scratch|skip|forget(?: about)?|never ?mind|cancel|scrap|lose|drop) (?:the|that|those|this|all the) ?(.+)$/;

/** "Scratch the gate" is no flaw and no work: it drops the gate. */
function dropped(fact: Extract<Fact, { kind: 'problem' | 'followUp' }>): Decision | null {
  const drops = DROPS.exec(fact.quote.toLowerCase())?.[1];
  return drops ? { ...spanOf(fact), kind: 'decision', what: fact.quote, drops } : null;
}

const spanOf = ({ quote, start, end, area, confidence, rule }: Fact) => ({ quote, start, end, area, confidence, rule });

const SET_FOR =
  /\b(?:set|scheduled|booked|lined up|down) for\b|\bis (?:on|at) (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/;

/** "Inspection is set for friday" is still to come. */
function appointment(fact: Done, text: string, at: string): FollowUp | null {
  // The day may stand just behind the words that were read.
  const said = fact.quote + /^ (?:for|on|at)\b[^.,;!?\n]*|^/.exec(text.slice(fact.end))![0];
  if (!SET_FOR.test(said.toLowerCase())) return null;
  const tokens = tokenise(said);
  const { quantities } = readQuantities(tokens, said);
  const day = readTimes(tokens, said, { now: at, quantities }).find((time) => !time.past)?.date;
  if (!day) return null;
  const task = fact.task.replace(/^(?:set|schedule|book|line up|finish) /, '');
  return {
    ...spanOf(fact),
    kind: 'followUp',
    task,
    who: fact.who,
    due: day,
    notBefore: null,
    waitingFor: null,
    condition: null,
  };
}

/** "Put", "cut", "set": the same word for what was done and what is to do. */
const SAME_IN_PAST = /^(?:put|cut|set|shut|hit|split)\b/;
const TOLD_AS_PAST = /\b(?:showed up|came in|came|arrived|no more|had|was|were|went|got)\b/;
const STILL_TO_DO =
  /\b(?:need|needs|gotta|have to|has to|should|will|gonna|going to|let's|please|then|next|tomorrow|must|make sure|don't forget)\b/;

/** "Flashing showed up. put it on, all 16 ft": told among what is past, so it was done. */
function alreadyDone(fact: FollowUp, text: string, facts: readonly Fact[]): Done | null {
  if (!SAME_IN_PAST.test(fact.task) || fact.due || fact.notBefore || fact.condition) return null;
  const said = text.toLowerCase();
  const from = Math.max(said.lastIndexOf('.', fact.start), said.lastIndexOf('\n', fact.start)) + 1;
  if (STILL_TO_DO.test(said.slice(from, fact.end))) return null;
  const past = facts.some(
    (f) => f.kind === 'done' || (f.kind === 'material' && (f.status === 'used' || f.status === 'have')),
  );
  if (!past && !TOLD_AS_PAST.test(said)) return null;
  return { ...spanOf(fact), kind: 'done', task: fact.task, who: fact.who };
}

const PACKS =
  /^(?:can|piece|roll|tube|box|bag|bundle|sheet|stick|length|case|pack|pail|bucket|gallon|tub|pc|one|carton|spool|coil)$/;

/** Goods whose count or name stands beside the words that were read for them. */
function goodsAsSaid(fact: Material, text: string, facts: readonly Fact[]): Material | null {
  if (isSizeOf(fact, facts)) return { ...fact, status: 'mentioned' };
  if (facts.some((f) => f.kind === 'material' && f.quantity !== null && !namesItself(f) && isNamedBy(f, fact, text)))
    return { ...fact, status: 'mentioned' };
  if (
    fact.unit &&
    fact.unit !== 'each' &&
    !PACKS.test(fact.unit) &&
    fact.quote.endsWith(fact.unit) &&
    !/\bof\b/.test(fact.quote) &&
    !/^(?:ft|in|sq ft|lb|gal|qt|pt|yd|cu yd|oz|m|mm|cm|l|kg)$/.test(fact.unit)
  )
    return { ...fact, item: fact.unit, unit: 'each' };
  if (/\bfooters?$/.test(fact.quote) && fact.unit === 'ft')
    return { ...fact, size: `${fact.quantity} ft`, quantity: null, exact: null, unit: null };
  if (fact.unit === 'ft' && /\bof (?:them|those|these|em|'em)$/.test(fact.quote)) return { ...fact, unit: 'each' };
  const said = text.toLowerCase();
  const before = said.slice(Math.max(0, fact.start - 40), fact.start);
  const after = said.slice(fact.end, fact.end + 60);
  if (/\b(?:instead of|rather than|not) (?:the |a |an )?$/.test(before)) return { ...fact, status: 'mentioned' };
  const next = fact.quantity === null || namesItself(fact) ? undefined : facts.find((f) => isNamedBy(fact, f, text));
  const named = next?.kind === 'material' ? next.item : renamed(fact, after);
  const item = (named ?? fact.item).replace(/ (?:instead|too|also|though|anyway|either)$/, '');
  const count = fact.quantity === null ? countBeside(fact, before, after, said) : null;
  if (item === fact.item && !count) return null;
  return {
    ...fact,
    item,
    ...(count && { quantity: count.count, exact: String(count.count), unit: count.unit ?? fact.unit ?? 'each' }),
  };
}

/** "One bottom seal, sixteen foot": a length told right behind counted goods is theirs. */
const isSizeOf = (fact: Material, facts: readonly Fact[]): boolean =>
  /^(?:ft|in)$/.test(fact.unit ?? '') &&
  facts.some(
    (f) =>
      f.kind === 'material' &&
      f !== fact &&
      f.item === fact.item &&
      f.status === fact.status &&
      f.unit === 'each' &&
      f.end <= fact.start &&
      fact.start - f.end < 30,
  );

const namesItself = ({ item, quote }: Material): boolean => {
  const quoted = wordsOf(quote);
  return [...wordsOf(item)].some((word) => quoted.has(word));
};

/** "One sheet of three quarter t and g plywood": a count without goods, and right behind it goods without a count. */
const isNamedBy = (fact: Material, name: Fact, text: string): boolean =>
  name.kind === 'material' &&
  name.quantity === null &&
  name.status === fact.status &&
  name.start >= fact.end &&
  name.start - fact.end < 16 &&
  !/[.,;\n]/.test(text.slice(fact.end, name.start));

/** "One roll of twelve two": what is named right behind the count is what is counted, whatever was told before. */
function renamed(fact: Material, after: string): string | null {
  const quoted = wordsOf(fact.quote);
  if ([...wordsOf(fact.item)].some((word) => quoted.has(word)) || fact.status === 'used') return null;
  const open = /\bof$/.test(fact.quote.trim());
  const [, name] = /^ (?:of )?(?:the )?([a-z0-9][a-z0-9/-]*(?: [a-z0-9/-]+)?)/.exec(after) ?? [];
  if (!name || (!open && !/\d/.test(name))) return null;
  if (!open && /^(?:and|or|so|but|not|for|to|on|in|at|left|gone|more|too)\b/.test(name)) return null;
  const words = name.split(' ').filter((word) => !/^(?:and|or|so|not|for|to|on|in|but|too)$/.test(word));
  return words.map((word) => DIGITS[word] ?? word).join(' ') || null;
}

const DIGITS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(NUMBERS.slice(1).map((word, k) => [word, String(k + 1)])),
  thirteen: '13',
  fifteen: '15',
  nineteen: '19',
  twenty: '20',
  thirty: '30',
};

const FIVE_NOT_THREE = new RegExp(`^ (${NUMBER})(?: [a-z]+)?,? (?:not|instead of|rather than) (?:${NUMBER})\\b`);
const MAKE_THAT = new RegExp(`^[^.;!?\\n]{0,30}[.,;]? (?:no )?(?:make|call) (?:that|it|them) (${NUMBER}) ?([a-z]+)?`);
const ARTICLE_PACK = new RegExp(`\\b(a|an|${NUMBER}) ([a-z]+)s? of (?:the )?$`);

/** "Make the boards five not three", "a tube of roof cement. make that two tubes": the figure is near, not in the name. */
function countBeside(
  fact: Material,
  before: string,
  after: string,
  said: string,
): { count: number; unit: string | null } | null {
  const five = FIVE_NOT_THREE.exec(after);
  if (five) return { count: numberOf(five[1]!)!, unit: fact.unit };
  const made = fact.status === 'need' ? MAKE_THAT.exec(after) : null;
  const unitOf = (word: string | undefined) => {
    const one =
      word?.replace(/(?:es|s)$/, (ending) => (ending === 'es' && !/(?:x|ch|sh)es$/.test(word) ? 'e' : '')) ?? '';
    return PACKS.test(one) ? one : null;
  };
  if (made) return { count: numberOf(made[1]!)!, unit: unitOf(made[2]) ?? fact.unit };
  if (
    fact.status === 'need' &&
    /\b(?:a|an|another) (?:[\w/-]+ ){0,3}$/.test(before) &&
    !/\bof (?:[\w/-]+ )*$/.test(before)
  )
    return { count: 1, unit: 'each' };
  const pack = ARTICLE_PACK.exec(before);
  const unit = unitOf(pack?.[2]);
  if (!pack || !unit || !said) return null;
  return { count: /^an?$/.test(pack[1]!) ? 1 : numberOf(pack[1]!)!, unit };
}

/** A pack's own word where goods' name should be: "two pieces", "a can and a half". */
export const isPackWord = (item: string) => PACKS.test(item);
