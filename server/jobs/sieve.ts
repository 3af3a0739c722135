import { stem, wordsOf } from '../../parser/trade/likeness.ts';
import { lowered } from '../../parser/trade/words.ts';
import type { FollowUp } from '../../parser/types.ts';
import { remembered } from '../takeoff/reading/remembered.ts';
import { type Board, isLive, type Standing } from './board.ts';
import { findGoods, type Goods } from './materials.ts';
import { tellsOfSupply } from './noItem.ts';

/** "Call it two sheets", "leave it", "point four five a bag": said like work, and none. */
const NO_WORK =
  /^(?:(?:ok|okay|so|um) )*(?:first|quick) look\b|^(?:so )?(?:call|leave|let) (?:it|that|them)\b(?! (?:dry|cure|set|sit))|^(?:make|keep) (?:it|that|the|those)\b|^point (?:\d|oh|zero|one|two|three|four|five|six|seven|eight|nine)/;
/** How a thing stands, where the same word is work: "it's set in the pan, level". */
const STANDS = /^(?:level|plumb|square|flush|straight|even|clear|dry|clean|smooth|tight)$/;
/** "Before we patch anything": what is not to be done yet. */
const NOTHING = /\b(?:anything|anybody|anyone|nothing)\b/;

/** A fact that opens nothing, whatever it was read as. */
export function leftOut({ quote, task, area }: FollowUp): boolean {
  const said = quote.toLowerCase();
  // "Just do the bedroom" names no work.
  if (area && /^do (?:the )?/.test(task) && [...wordsOf(task.slice(3))].every((word) => wordsOf(area).has(word)))
    return true;
  return NO_WORK.test(said) || STANDS.test(said) || NOTHING.test(task) || /^\w+ $/.test(task);
}

const BUYS =
  /^(?:go (?:and )?)?(?:get|grab|buy|order|purchase|pick up|pick|bring|fetch|reorder|(?:stop|run|swing|go|head) (?:by|at|to|over)\b.* for)\b/;
/** "Somebody has to run by the yard for it", "gotta go get them": to fetch what was spoken of. */
const FETCHES =
  /\b(?:go (?:and )?(?:get|grab|pick)|(?:run|swing|stop|head) (?:by|over|back|out|to)\b.* (?:for|and get|and grab)) (?:it|them|those|that|the rest|the others?)\b/;
/** Fetched things that are work: a permit, a sample, somebody. */
const NO_GOODS =
  /\b(?:permit|sample|inspector|inspection|quote|bid|price|key|keys|approval|answer|signature|measurements?|photos?)\b/;

/** Buying is no item: it lives in the order. */
export function isPurchase(fact: FollowUp, goods: Goods): boolean {
  const verb = BUYS.exec(fact.task)?.[0];
  if (FETCHES.test(fact.quote.toLowerCase()) && !NO_GOODS.test(fact.task)) return true;
  if (!verb || fact.who || NO_GOODS.test(fact.task)) return false;
  if (/^(?:buy|order|purchase|reorder|grab|pick)/.test(verb)) return true;
  const thing = fact.task.slice(verb.length).trim();
  if (/\b(?:in|on|off|out|done|over|back|down|up|going|ready)$/.test(thing)) return false;
  return findGoods(goods, { item: thing, size: null, specs: [], unit: null, status: 'need' }) !== null;
}

const OTHERS =
  /^(?:so |and |but |cause |because )*(?:they're|they|they'll|owner|owner's|customer|homeowner|(?:her|his|their|the owner's|my) (?:brother|nephew|son|dad|father|husband|wife|cousin|neighbor|friend|uncle|buddy)(?:'s| is)?|she's|she'll|he'll)\b/;
/** "Owner says her brother is doing it": who says so does not matter. */
const SAYS =
  /^(?:(?:the )?(?:owner|homeowner|customer|client|tenant|manager)|she|he|they)(?:'s| has)? (?:says?|said|thinks?|told (?:me|us)) (?:that )?/;
const SENDS = /^(?:send|ship|deliver|bring|drop|mail|replace|exchange|come|arrive)\b/;

/** Whether a plan is another's: a supplier's delivery comes to us; what the owner sees to himself is not ours. */
export function isOthers(fact: FollowUp, lead: string): 'comes to us' | 'not ours' | null {
  if (tellsOfSupply(fact)) return 'comes to us';
  const quote = fact.quote.toLowerCase();
  // "They're checking the other yard and will call": the one who does it was named before.
  const whole = /^(?:will|'ll|gonna|going to)\b/.test(quote) ? `${lead.split(',').at(-1)!.trim()} ${quote}` : quote;
  const said = whole.replace(SAYS, '');
  if (fact.who && !/^(?:owner|customer|homeowner|client)$/.test(fact.who))
    return SENDS.test(fact.task) && /^(?:supplier|supply house|store|yard|shop)$/.test(fact.who) ? 'comes to us' : null;
  // "He brings his own mud".
  if (SENDS.test(fact.task) && /\b(?:his|her|their) own\b/.test(said)) return 'not ours';
  if (!OTHERS.test(said) || /\b(?:wants?|asked|needs?|likes?|would like|'d like)\b/.test(said)) return null;
  return SENDS.test(fact.task) ? 'comes to us' : 'not ours';
}

/** Goods that finished work put in place: "install new pipe boot" is a pipe boot. */
export function fixedBy(task: string): string | null {
  const match = /^(?:install|put|replace|swap|change|hang|set|fit|lay|mount|apply|use)\b (?:new )?(.+)$/.exec(task);
  return match ? match[1]!.replace(/\b(?:in|on|up|down|back)\b.*$/, '').trim() || null : null;
}

const GONE_FLAW =
  /\b(?:no (?:more )?|stopped |not |doesn't |don't |isn't |quit )(drips?|dripping|leaks?|leaking|seep|seeping|buzz|buzzing|squeak|squeaks|squeaking|rattle|rattles|rattling|rubbing|rub|wobble|wobbling|stick|sticking|smell|tripping)\b/g;
/** A look that finds nothing yet, or a wish, ends nothing. */
const NOT_YET = /\b(?:if|until|till|unless|make sure|so far|hope|hopefully|should be|yesterday|was)\b/;

/** Flaws that words say are gone, and where, if they say so ("no leaks at the trap"), whichever thing had them. */
const goneIn = remembered((text) => {
  const said = lowered(text);
  return [...said.matchAll(GONE_FLAW)]
    .filter(({ index }) => !NOT_YET.test(said.slice(Math.max(0, said.lastIndexOf('.', index)), index)))
    .map(({ 0: whole, 1: flaw, index }) => {
      const place = /^ (?:at|on|in|from|around|by|under) ([a-z' ]+)/.exec(said.slice(index + whole.length))?.[1];
      return { flaw: stem(flaw!), place: [...wordsOf(place ?? '')] };
    });
});

/** Flaws that a note says are gone: "no more buzz", "no drips". Of the room just spoken of, or the only such flaw. */
export function settledIn(
  board: Board,
  text: string,
  met: readonly Standing[],
  at: string,
  areas: readonly string[],
): Standing[] {
  const gone = goneIn(text);
  if (!gone.length) return [];
  const said = text.toLowerCase();
  const out: Standing[] = [];
  const rooms = areas.filter((area) => said.includes(area.toLowerCase()));
  const elsewhere = (area: string) => rooms.length > 0 && !rooms.includes(area);
  for (const { flaw, place } of gone) {
    const fits = [...(board.live.get(flaw) ?? [])].filter(
      (item) =>
        isLive(item) &&
        item.problem &&
        wordsOf(item.problem).has(flaw) &&
        !met.includes(item) &&
        item.history[0]!.at < at &&
        (!place.length || place.some((word) => item.words.has(word) || item.told.has(word))) &&
        (item.area === null || !elsewhere(item.area)),
    );
    // A test that finds nothing clears every such flaw; a word in passing clears the room's, or the only one.
    const tried = /\b(?:re-?tested|tested|ran|hosed?|turned|filled|flushed|checked)\b/.test(said);
    const here = fits.filter((item) => item.area !== null && said.includes(item.area.toLowerCase()));
    out.push(...(here.length ? here : tried || fits.length === 1 ? fits : []));
  }
  return [...new Set(out)];
}
