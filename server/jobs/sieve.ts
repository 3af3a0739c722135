import { wordsOf } from '../../parser/trade/likeness.ts';
import type { FollowUp } from '../../parser/types.ts';
import { findGoods } from './goods/found.ts';
import type { Goods } from './goods/position.ts';
import { tellsOfSupply } from './said/noItem.ts';

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
