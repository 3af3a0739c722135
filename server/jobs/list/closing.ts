import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Done } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { leadOf } from '../meeting.ts';
import { isOnlyArranged, isOnlyWished } from '../said/arranged.ts';
import { BEFORE, CARRIES, ENDS, objectWords, PUTS, stems, verbOf } from '../said/verbs.ts';
import type { Entry } from '../types.ts';
import { isWork, type Standing, sharing } from './board.ts';
import { endByWords } from './hazardous.ts';
import { ALONE, ask, nameOf, open, setState, type Telling } from './items.ts';
import { leaveOpen, partOfWork } from './leftOpen.ts';
import { type ByRules, sureOf } from './linking/index.ts';
import { find, headIn, headOf, namesAnother, placesClash, unmeasured } from './match.ts';

/** The item that finished work answers, by the rules, or the one that it may answer. */
function answeredByRules(telling: Telling, fact: Done): ByRules {
  const { board, entry, called } = telling;
  const { verb, object: named } = called;
  // "New one's in": the thing stands in the words just before.
  const points = ![...named].some((word) => !POINTERS.has(word));
  const object = points ? objectWords(`x ${telling.lead} ${fact.quote}`) : named;
  const words = points ? wordsOf(`${fact.task} ${telling.lead} ${fact.quote}`) : called.words;
  const fits = (item: Standing) => answers(item, verb);
  const sought = { words, area: fact.area, quote: fact.quote, head: headOf(fact.task) };
  const whole = find(board, sought, { fits, sure: 0.6, anyOf: false });
  if (whole?.sure) return sureOf(whole.item);
  const byThing = (of: ReadonlySet<string>) =>
    of.size ? find(board, { ...sought, words: of }, { fits, sure: 0.75, anyOf: false }) : null;
  const said = byThing(object);
  const thing = said?.sure ? said : byThing(unmeasured(object));
  if (thing?.sure) return sureOf(thing.item);
  const item =
    replacedBy(telling, fact) ??
    renewedOf(telling, fact) ??
    patchedUp(telling, fact) ??
    dueToday(telling, fact, entry.at.slice(0, 10)) ??
    onlyOne(telling, fact);
  return item ? sureOf(item) : { item: null, perhaps: (whole ?? thing ?? said)?.item ?? null };
}

/** Finished work closes the item that it answers, and only that; else it stands in the day log as its own closed line. */
export function meetDone(telling: Telling, fact: Done): Standing {
  const { board, entry } = telling;
  const asked = isOnlyWished(saidBefore(entry, fact));
  const { item: known, perhaps } =
    telling.apart || asked || isOnlyArranged(fact.quote)
      ? ALONE
      : telling.link(telling, fact, answeredByRules(telling, fact));
  if (known) {
    known.met.push(telling.key);
    const part = partOfWork(telling, known, fact.quote);
    if (part) {
      leaveOpen(board, known, entry, fact.quote, part.left);
      return known;
    }
    if (!endByWords(board, known, entry, telling.key, fact)) return known;
    for (const plan of planOf(telling, fact, known, entry.at.slice(0, 10))) {
      if (endByWords(board, plan, entry, telling.key, fact)) plan.met.push(telling.key);
    }
    return known;
  }
  const item = open(
    telling,
    { task: fact.task, wording: fact.wording ?? null, area: fact.area, who: fact.who },
    fact.quote,
  );
  if (telling.part?.plain && !isToldBehind(telling, fact)) {
    leaveOpen(board, item, entry, fact.quote, telling.part.left);
    return item;
  }
  if (asked) return item;
  setState(board, item, entry, 'done', fact.quote);
  if (perhaps && !telling.apart)
    ask(telling, `Does that finish ${nameOf(perhaps)}? Say "${perhaps.number} is done".`, perhaps);
  return item;
}

/** The words before a fact in its note, whatever was read in them. */
const saidBefore = ({ what }: Entry, { start }: Done): string =>
  what.kind === 'noteRead' ? leadOf(what.text, 0, start) : '';

/** What is left stands on the list already: told of the same words, or of what this note goes on to. */
const isToldBehind = ({ entry, met, part }: Telling, { quote, end }: Done): boolean =>
  met.some(({ history }) => history.at(-1)!.entry === entry.id && history.at(-1)!.words === quote) ||
  (entry.what.kind === 'noteRead' &&
    !TO_GO_ITSELF.test(part?.left ?? '') &&
    entry.what.facts.some(
      (f) => (f.kind === 'followUp' || f.kind === 'problem') && f.start >= end && f.start < end + BEHIND,
    ));
/** Counted, it is a remainder and nothing that stands by itself. */
const TO_GO_ITSELF = /\bto (?:go|do)$/;
const BEHIND = 60;

const POINTERS = stems('one ones new it them that those this everything all both other');

/** May this work end that item: the same work, or a repair for a flaw; never what only comes before it. */
function answers(item: Standing, verb: string): boolean {
  const owed = verbOf(item.task);
  if (ENDS.has(verb) || verb === owed || `re${verb}` === owed || (CARRIES.has(verb) && CARRIES.has(owed))) return true;
  if (BEFORE.has(verb)) return false;
  if (item.task.includes(':') || !isWork(owed)) return true;
  return PUTS.has(verb) && PUTS.has(owed) ? true : item.problem !== null;
}

/** "I'll lift the pavers this afternoon": work planned up to today for the flaw that was put right by doing it. */
const planOf = ({ board, called: { verb, object } }: Telling, fact: Done, known: Standing, day: string): Standing[] =>
  known.problem === null
    ? []
    : board.items
        .slice(-40)
        .filter(
          (item) =>
            item.readyOn !== null &&
            item.readyOn <= day &&
            item !== known &&
            isLive(item) &&
            item.problem === null &&
            verbOf(item.task) === verb &&
            sameArea(item.area, fact.area) &&
            object.has(item.head),
        );

const MENDS = stems(
  'install put replace swap change fit fix repair tighten patch seal reseal caulk recaulk adjust secure fasten glue shim plane level clear unclog snake rehang reset mount hang set bolt screw nail rebuild reattach solder wire reconnect sister splice regrout repoint straighten plumb weld reinforce brace refasten readjust rescrew renail',
);

/** "Put the stop valve in" answers the one open flaw whose thing is a stop valve. */
function replacedBy({ board, called: { verb, object } }: Telling, fact: Done): Standing | null {
  if (!MENDS.has(verb) && !(ENDS.has(verb) && fact.area !== null)) return null;
  const thing = fact.task.split(' ').slice(1).join(' ');
  const head = headIn(thing, fact.quote, fact.area);
  const puts = /^(?:install|put|replace|swap|change|fit|finish)\b/.test(fact.task);
  const fits = [...sharing(board, object, 'live')].filter(
    (item) =>
      item.problem &&
      item.thing &&
      sameArea(item.area, fact.area) &&
      (puts ? object.has(item.head) : item.head === head && !namesAnother(thing, head, item)) &&
      !placesClash({ words: object, area: fact.area, quote: fact.quote }, item),
  );
  return fits.length === 1 ? fits[0]! : null;
}

/** "Old tank is out. New one's set in the pan": the flaw of what was taken out just before. */
function renewedOf({ board, removed }: Telling, fact: Done): Standing | null {
  if (removed === null || !/\bnew (?:one|ones)\b/.test(fact.quote.toLowerCase())) return null;
  const object = objectWords(removed);
  const fits = [...sharing(board, object, 'live')].filter(
    (item) => item.problem && item.thing && sameArea(item.area, fact.area) && object.has(item.head),
  );
  return fits.length === 1 ? fits[0]! : null;
}

/** Flaws that are things to be worked on. */
const FLAWS = stems('dip hole crack gap dent hump bubble stain squeak sag leak rot spot void tear scratch gouge');

/** "Dip's filled": the flaw itself was worked on, and only one flaw there was told of as one. */
function patchedUp({ board, called: { verb, object } }: Telling, fact: Done): Standing | null {
  if (BEFORE.has(verb)) return null;
  const flaws = [...object].filter((word) => FLAWS.has(word));
  if (!flaws.length) return null;
  const fits = [...sharing(board, new Set(flaws), 'live')].filter(
    (item) =>
      item.problem && sameArea(item.area, fact.area) && flaws.every((w) => item.words.has(w) || item.told.has(w)),
  );
  return fits.length === 1 ? fits[0]! : null;
}

/** Work on a thing that one item alone is about answers it, whatever was done to it. */
function onlyOne({ board, called: { verb, object } }: Telling, fact: Done): Standing | null {
  if (BEFORE.has(verb) || NOT_YET.test(fact.quote.toLowerCase())) return null;
  const thing = fact.task.split(' ').slice(1).join(' ');
  const fits = [...sharing(board, object, 'live')].filter(
    (item) => object.has(item.head) && sameArea(item.area, fact.area),
  );
  const [only] = fits;
  if (fits.length !== 1 || !only || isWork(only.head)) return null;
  if (namesAnother(thing, only.head, only) || placesClash({ words: object, area: fact.area, quote: fact.quote }, only))
    return null;
  return answers(only, verb) ? only : null;
}
/** Some of it is left, or it is only begun. */
const NOT_YET =
  /\b(?:half|almost|nearly|part|partly|some|started|first|one coat|so far|except|but not|not|ordered|ready to|tomorrow|still)\b/;

const ONE_OF = /\b(?:first|second|third|fourth|fifth|other|last|rest)\b/;
/** "Second one tomorrow", "second course is pointed": told by which of them it is, with no verb. */
const sameOneOf = (planned: string, done: string): boolean => {
  const which = ONE_OF.exec(planned);
  return which !== null && which.index === 0 && ONE_OF.exec(done)?.[0] === which[0];
};

/** "Sand it tomorrow", and the day after "patch is sanded": the same work on the day that it was due, if only one was. */
function dueToday({ board, called: { verb, object } }: Telling, fact: Done, day: string): Standing | null {
  const fits = board.items
    .slice(-40)
    .filter(
      (item) =>
        (item.due === day || item.readyOn === day) &&
        isLive(item) &&
        (verbOf(item.task) === verb || sameOneOf(item.task, fact.task)) &&
        sameArea(item.area, fact.area) &&
        ([...object].some((word) => item.words.has(word) || item.told.has(word)) ||
          /\b(?:it|that|them|those)\b/.test(item.history[0]?.words ?? '')),
    );
  return fits.length === 1 ? fits[0]! : null;
}
