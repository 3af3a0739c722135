/** What was read as finished work and tells of a flaw, or of work to come. Common practice in how people talk, no source. */
import { shared } from '../../../parser/facts/spans/cut.ts';
import { verbOf } from '../../../parser/facts/verbs.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { Done, Fact, FollowUp, Material, Problem } from '../../../parser/types.ts';
import { dangersIn } from '../../takeoff/index.ts';
import { isWeighed } from './noItem.ts';
import { FOUND_SO, isStillAmiss } from './stillAmiss.ts';
import { spanOf, toCome } from './toldAnew.ts';

/** What the words of finished work mean where they tell of none; the work itself where they do; null where another fact has said it. */
export function meantByDone(fact: Done, text: string, facts: readonly Fact[]): Done | FollowUp | Problem | null {
  const read = (kind: Fact['kind']) => facts.some((f) => f.kind === kind && shared(f, fact) >= 0.5);
  // "One of its runners has jumped the rail": the same words are read as a flaw.
  if ((read('problem') && isStillAmiss(text, fact)) || isMoreOfFlaw(fact, text, facts)) return null;
  if (isNoWork(fact)) return null;
  if (isHeadedAsToCome(fact, text)) return read('followUp') ? null : toCome(fact, fact.task, null);
  if (isOrder(fact)) return read('followUp') ? null : toCome(fact, baseOf(fact), null);
  return fell(fact) ?? fact;
}

const FELL =
  /^(?:and |so |but |oh )*(?:the |that |one of (?:the|its) |my |her |his )?([a-z][a-z' -]{1,30}?)(?:'s| has| have| is| are)? (?:all |just |right |clean )?((?:dropped|fallen|fell|slipped|jumped|blown|blew|washed|worked) (?:out|off|down|loose|away|through)(?: again| overnight)?)(?: (?:in|on|of|at|from|by|under|over|above|below|behind|near|along|beside) [a-z0-9 '-]+)?$/;

/** "Putty dropped out", "slate slipped down", "the seal's perished": things do that by themselves. */
function fell(fact: Done): Problem | null {
  const said = lowered(fact.quote).trim();
  const [, thing, defect] = FELL.exec(said) ?? FOUND_SO.exec(said) ?? [];
  if (!thing || /^(?:i|we|he|she|they)$/.test(thing)) return null;
  return { ...spanOf(fact), kind: 'problem', thing, defect: defect!, state: 'open', suspected: false };
}

const CAME_AWAY =
  /^(?:pulled|torn|ripped|come|came|broken?|split|knocked|rusted|rotted|worn|popped|snapped) (?:right |clean |all |half )*(?:out|off|loose|away|apart|through|down)\b/;
/** "The bracket's loose, pulled right out of the plaster": goes on from the flaw, and tells how bad it is. */
const isMoreOfFlaw = ({ quote, start }: Done, text: string, facts: readonly Fact[]): boolean =>
  CAME_AWAY.test(lowered(quote)) &&
  facts.some(
    (f) => f.kind === 'problem' && f.state === 'open' && f.end <= start && /^, *$/.test(text.slice(f.end, start)),
  );

/** "It's block", "that's all plaster": what something is made of. */
const MADE_OF =
  /^(?:it|that|they|those)(?:'s|'re| is| are) (?:all |just |old |solid )*(?:block|brick|concrete|stone|plaster|drywall|tile|wood|steel|iron|cast iron|copper|galvanized|pvc|vinyl|masonry|stucco)$/i;

/** "The switch is hot", "both swabs came up red": a danger, with no verb of work, tells of no finished work. */
const isNoWork = ({ task, quote }: Done): boolean =>
  MADE_OF.test(quote.trim()) ||
  (task.startsWith('install ') && !/\b(?:install|put|set|hung|mount|fit)/i.test(quote) && dangersIn(quote).length > 0);

const ORDER =
  /^(?:(?:so|and|then|just) )*(we )?(?:just |all )?([a-z]+) (?:(?:up|out|down|back|off|in|over) )?(?:the|all|it|them|that|those|both|new|[a-z]+)\b/;
/** Verbs by which a speaker of another first language tells of what is over. */
const OVER = /^(?:finish|do|make|get|have|come|go|take)$/;

/** "Brick up opening", "screw it back up", "we rewire the upstairs": work told in the base form of its verb is to come. */
function isOrder(fact: Done): boolean {
  if (!isWeighed(fact)) return false;
  const [, we, word] = ORDER.exec(lowered(fact.quote).trim()) ?? [];
  const verb = word === undefined ? undefined : verbOf(word);
  if (verb?.use !== 'work' || !verb.forms.has('base') || verb.forms.has('past') || verb.lemma !== word) return false;
  if (verbOf(fact.task.split(' ')[0]!)?.lemma !== verb.lemma && !fact.task.startsWith('install ')) return false;
  return we === undefined ? !NOUN_TOO.test(word!) && !TOLD_DONE.test(fact.quote) : !OVER.test(word!);
}
/** Words that name a thing as often as they tell to work on it: "strip on", "seal in". */
const NOUN_TOO =
  /^(?:strip|seal|patch|plate|plug|cap|clamp|clip|trim|screw|nail|bolt|brace|bracket|box|tile|tape|tap|switch|block|frame|coat|drain|vent|pipe|pin|plane|plaster|grout|mortar|mud|paint|primer|stain|shim|sod|screen|shingle|skirt|strap|stub|filter|foam|form|fence|felt|flash|float|glue|hinge|hook|insert|joint|level|line|lock|mark|mount|nail|notch|oil|paper|pump|rail|render|rod|roll|roof|rout|run|sand|saw|scaffold|set|shelf|slab|sleeve|solder|splice|stack|stake|stand|step|stop|stud|support|test|tin|track|truss|valve|wall|wash|wax|wire|wrap|finish|light|set|pass)$/;
const TOLD_DONE = /\b(?:done|finished?|already|today|this morning|is|are|'s|was|were|in|on)\b/i;

const baseOf = ({ quote }: Done): string => lowered(quote).replace(/^(?:(?:so|and|then|just|we|all) )*/, '');

const NOTE_HEAD = /^\s*(?:the )?(?:plan|scope(?: of work)?|to[ -]?do|work list|job list)(?: list)? ?[.:=-]/;
const SENTENCE_HEAD =
  /(?:^|[.;!?\n]) ?(?:left over|left to do|still to do|to do|to come|what's left|remaining|outstanding|next|tomorrow|next (?:week|visit)|(?:mon|tues|wednes|thurs|fri|satur|sun)day) ?[:=][^.;!?\n]*$/;

/** "Plan. Carpet out, plank in", "left over: last coat on the gable": a heading says that all of it is to come. */
function isHeadedAsToCome({ start, rule }: Done, text: string): boolean {
  if (rule === 'done/past') return false;
  const said = lowered(text);
  return NOTE_HEAD.test(said) || SENTENCE_HEAD.test(said.slice(0, start));
}

/** Goods that a note tells as bought. */
export function fetchedIn(steps: readonly { fact: Fact }[]): readonly Material[] {
  const out: Material[] = [];
  for (const { fact } of steps) if (fact.kind === 'material' && fact.status === 'bought') out.push(fact);
  return out;
}

/** "Got the caulk": goods that were fetched, and no finished work; so is what a note names beside them, and nothing done to it. */
export const isFetching = (fact: Fact, fetched: readonly Material[]): boolean =>
  fact.kind === 'done' &&
  FETCHES.test(fact.quote) &&
  (fetched.some((goods) => shared(goods, fact) >= 0.5) || (fetched.length > 0 && !WORKED_ON.test(fact.quote)));
const FETCHES = /^(?:(?:and|so|then|i|we|he|she|they) )*(?:got|picked up|grabbed|bought|fetched|collected)\b/i;
const WORKED_ON =
  /\b(?:in|on|up|down|out|off|back|over|through|done|set|hung|laid|put|cut|built|to|(?!red\b|bed\b|shed\b)[a-z]+(?:ed|ing))\b/i;
