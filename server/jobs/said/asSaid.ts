import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { shownOf } from '../../../parser/shown.ts';
import { readTimes } from '../../../parser/times/index.ts';
import { stem } from '../../../parser/trade/likeness.ts';
import type { Decision, Done, Fact, FollowUp, Problem } from '../../../parser/types.ts';
import { goodsAsSaid, sentenceOf } from '../goods/asSaid.ts';
import { sentenceFrom } from '../meeting.ts';
import { isInAtSupplier } from './arranged.ts';
import { tellsDrop } from './dropsTold.ts';
import { isNoFlaw, isNoPlan } from './noItem.ts';
import { meantByDone } from './notDone.ts';
import { isStillAmiss } from './stillAmiss.ts';
import { spanOf, toCome } from './toldAnew.ts';
import { verbOf } from './verbs.ts';

/** A fact as its whole note means it, of another kind where need be; null where the note means no such thing. */
export function asSaid(fact: Fact, text: string, facts: readonly Fact[], at: string): Fact | null {
  if (/^(?:followUp|done|problem)$/.test(fact.kind) && isForbidden(fact, text, facts)) return null;
  if ((fact.kind === 'problem' || fact.kind === 'done') && ONLY_LOOKED.test(fact.quote.toLowerCase())) return null;
  if ((fact.kind === 'followUp' || fact.kind === 'problem') && NOT_OURS.test(sentenceOf(text, fact))) return null;
  switch (fact.kind) {
    case 'material':
      return goodsAsSaid(fact, text, facts) ?? fact;
    case 'done':
      return ARRIVES.test(fact.quote.toLowerCase()) ||
        TESTED.test(fact.quote.toLowerCase()) ||
        isInAtSupplier(text, fact)
        ? null
        : (appointment(fact, text, at) ?? meantByDone(fact, text, facts));
    case 'followUp':
      if (STAYS.test(fact.quote.toLowerCase()) || runsOn(fact, text, facts)) return null;
      if (onlyWants(fact, facts) || onlyCounts(fact, facts) || isNoPlan(fact)) return null;
      return (
        dropped(fact) ?? (tellsDrop(fact.quote) ? null : (alreadyDone(fact, text, facts) ?? inspection(renewed(fact))))
      );
    case 'problem':
      if (HOLDS.test(text.slice(fact.end).toLowerCase()) || HOLDS_IN.test(fact.quote.toLowerCase())) return null;
      if (isSoldOut(fact) || hasCome(fact) || isNoFlaw(fact)) return null;
      if (ALL_RIGHT.test(fact.defect) && !/\b(?:not|too|n't|never)\b|n't\b/.test(fact.quote)) return null;
      return dropped(fact) ?? putIn(fact) ?? takenOut(fact) ?? standing(found(putRight(fact, facts)), text);
    default:
      return fact;
  }
}

/** "Screen came in" is goods that arrived. */
const ARRIVES = /\b(?:came|comes|coming) in\b/;
/** "The sill tested positive", "came up red": what a test found is no work done. */
const TESTED = /\b(?:came|comes|turned|tested|went|reads?) (?:up |back |out )?(?:red|hot|positive)\b/;
/** "The flashing showed up": goods that came, with no word of a flaw. */
const hasCome = ({ rule, quote }: Problem) =>
  rule === 'problem/weighed' &&
  /\b(?:showed up|came in|arrived)(?: (?:last night|yesterday|today|early|late|this (?:morning|am)))?$/.test(
    quote.toLowerCase(),
  ) &&
  !/\b(?:water|rain|wind|snow|air|cold|mice|bugs|ants)\b/.test(quote.toLowerCase());
/** "Brace stays on till saturday": nothing to do. */
const STAYS = /\b(?:stays?|remains?) (?:on|in|off|up|down|there|put|open|closed)\b/;
const ALL_RIGHT =
  /\b(?:fine|good|great|perfect|okay|ok|quiet|smooth)$|(?:^|\b(?:all|just|fits?|sits?|looks?|works?|runs?|out) )right$|^(?:good|plenty|right on)\b(?![ -]siz)/;

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
  (/^no\b/.test(defect) && SOLD_OUT.test(quote.toLowerCase())) || OUT_OF_GOODS.test(quote.toLowerCase());
const OUT_OF_GOODS =
  /\b(?:they|he|she|store|yard|counter|supplier|supply house)(?:'re|'s| is| are| was| were| had)? (?:all |clean |just )?(?:run |sold )?out of (?!square|plumb|level|line|true|round|whack|order|place)/;
const SOLD_OUT =
  /\b(?:store|yard|counter|supplier|supply house) (?:had|has)\b|\b(?:on the shelf|in stock|at the (?:yard|store|supply house|counter)|carry|carries)\b/;

const TAKEN_OUT = /\b(?:cut|busted|torn|tore|ripped|pulled|knocked|dug|chipped|scraped) (?:out|off|up|down)$/;

/** "Wet boards cut out", "the slab's busted out": the flaw is what was done to it. */
function takenOut(fact: Problem): Done | null {
  if (fact.state !== 'open' || !TAKEN_OUT.test(fact.quote.toLowerCase().trim())) return null;
  const thing = fact.thing.replace(TAKEN_OUT, '').trim();
  return { ...spanOf(fact), kind: 'done', task: `remove ${thing || fact.thing}`, who: null };
}

/** "Still need the other box", "still short that one", "I'll take two sheets": goods to get, which the order holds. */
const onlyWants = (fact: FollowUp, facts: readonly Fact[]): boolean =>
  (/^(?:need|want|short)\b/.test(fact.task) ||
    /^(?:i|we)(?:'ll| will) take\b/i.test(fact.quote) ||
    SHORT_OF.test(fact.quote.toLowerCase())) &&
  facts.some((f) => f.kind === 'material' && f.status === 'need' && f.start < fact.end && fact.start < f.end);
const SHORT_OF = /^(?:and |but |so )*(?:still |we're |i'm |we are )*short\b/;

/** "We need shims 2 packs", "1 on the shelf for the owner": goods, and no work. */
const onlyCounts = ({ task, start, end, rule, quote }: FollowUp, facts: readonly Fact[]): boolean =>
  /\b(?:don't|do not|won't|no longer|didn't) need\b/.test(quote.toLowerCase()) ||
  facts.some(
    (f) =>
      f.kind === 'material' &&
      ((f.status === 'need' && f.start < end && start < f.end && verbOf(task) === stem(f.item)) ||
        ((f.status === 'used' || f.status === 'have') && f.start === start && rule === 'follow-up/weighed')),
  );

/** "The electrician came for a look round": a visit, and nothing done or amiss. */
const ONLY_LOOKED =
  /\b(?:came|been|come|was|dropped|stopped|swung)(?: (?:by|out|over|round|here|in|up))*(?: (?:today|yesterday|this (?:morning|afternoon)))? (?:for|to have|and had|to take|and took) a (?:good |quick )?look(?: (?:round|around|see|over it|at it|at (?:the|that) [a-z]+))?$/;

/** "Nobody scrapes or sands in there until": what must not be done, read as decided, is no work, done or to do. */
const isForbidden = ({ start, end }: Fact, text: string, facts: readonly Fact[]): boolean =>
  facts.some(
    (f) =>
      f.rule === 'decision/hold' &&
      f.start <= start &&
      end <= f.end &&
      // "No grinder, no torch": the ban goes on.
      !/[,;:](?! (?:and |or )?no\b)/.test(text.slice(f.start, start + 'no '.length)),
  );

const NOT_OURS =
  /\bnothing to do with (?:this|us|our)\b|\bnot (?:ours|our (?:deal|job|problem|scope)|my (?:deal|job|problem))\b/;

const AUTHORITY =
  /^(?:so |and |then )*(?:the )?(?:city|county|council|town|state|inspector|building (?:dept|department|inspector))\b/;
/** "City comes out tuesday to look at the heater" is an inspection, whoever looks. */
const inspection = (fact: FollowUp): FollowUp =>
  /^(?:look|see|check|come|inspect|visit)\b/.test(fact.task) && AUTHORITY.test(fact.quote.toLowerCase())
    ? {
        ...fact,
        task: `inspection: ${fact.task}`,
        wording: `inspection: ${shownOf(fact)}`,
        who: fact.who ?? 'inspector',
      }
    : fact;

/** A single word that goes straight on from another fact's is no work of its own: "a california patch". */
const runsOn = (fact: FollowUp, text: string, facts: readonly Fact[]): boolean =>
  !/\s/.test(fact.quote) &&
  facts.some((f) => f !== fact && f.end <= fact.start && /^ ?$/.test(text.slice(f.end, fact.start)));

/** "Toe kick fixed, you can't see it": weighed as a flaw for its thing, and told as put right. */
const putRight = (fact: Problem, facts: readonly Fact[]): Problem =>
  (fact.rule === 'problem/weighed' && PUT_RIGHT.test(fact.quote.toLowerCase())) ||
  // "Swapped the chipped paver": work and flaw in the same words.
  facts.some((f) => f.kind === 'done' && f.start === fact.start && f.end === fact.end)
    ? { ...fact, state: 'fixed' }
    : fact;
const PUT_RIGHT =
  /^(?:the |that |those |both |all )*[a-z]+(?: [a-z]+){0,2} (?:(?:is|are|got|all) )*(?:fixed|repaired|patched|replaced|sorted|tightened|cleared|unclogged)\b(?! (?:wrong|badly|poorly|by))/;

/** "Door seal's perished all round, wants a new one": weighed as put right, and told with no word of a repair. */
const standing = (fact: Problem, text: string): Problem =>
  fact.state === 'fixed' && isStillAmiss(text, fact) ? { ...fact, state: 'open' } : fact;

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
  return toCome(fact, task, day);
}

/** "Put", "cut", "set": the same word for what was done and what is to do. */
const SAME_IN_PAST = /^(?:put|cut|set|shut|hit|split)\b/;
const TOLD_AS_PAST = /\b(?:showed up|came in|came|arrived|no more|had|was|were|went|got)\b/;
const STILL_TO_DO =
  /\b(?:need|needs|gotta|have to|has to|should|will|gonna|going to|let's|please|then|next|tomorrow|must|make sure|don't forget|(?:i|we)'ll|when (?:it|they|the|that)|once (?:it|they|the))\b/;

/** "Flashing showed up. put it on, all 16 ft": told among what is past, so it was done. */
function alreadyDone(fact: FollowUp, text: string, facts: readonly Fact[]): Done | null {
  if (!SAME_IN_PAST.test(fact.task) || fact.due || fact.notBefore || fact.condition) return null;
  const said = text.toLowerCase();
  const from = sentenceFrom(said, fact.start);
  if (STILL_TO_DO.test(said.slice(from, fact.end))) return null;
  const past = facts.some(
    (f) => f.kind === 'done' || (f.kind === 'material' && (f.status === 'used' || f.status === 'have')),
  );
  if (!past && !TOLD_AS_PAST.test(said)) return null;
  return { ...spanOf(fact), kind: 'done', task: fact.task, who: fact.who };
}
