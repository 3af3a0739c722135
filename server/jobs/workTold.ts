import { wordsOf } from '../../parser/trade/likeness.ts';
import { lowered } from '../../parser/trade/words.ts';
import type { Decision, Done, Fact } from '../../parser/types.ts';
import { remembered } from '../takeoff/reading/remembered.ts';
import { type Board, isLive } from './board.ts';
import { find, headOf, namesAnother } from './match.ts';

/** Told with the same ending, and no work that ends a thing. */
const HARMED =
  '(?:crack|rust|clog|plug|stain|chip|order|deliver|need|suppos|cover|ruin|swell|warp|cupp|jamm|block|stripp|rott|wreck|bust|call|pric|measur|mark|check|look|open|remov|pull|expos|dropp|return|soak|flood|damag|peel|scratch|dent|gouge|mold|corrod|missed|mess|screwed up|stopp|start|turn|mov|plann|ask|want|us|strand|bow|twist|curl|burn|fray|kink|pinch|crush|flatten|collaps|leak|dripp|fad|finished wrong)[a-z]*';

/** "Seal's on", "bracket tightened with longer screws", "the opener is quiet now": a thing, and that it is all right. */
const PUT_RIGHT = new RegExp(
  `^((?:the |that |those |both |all |new |my |our )*[a-z0-9][a-z0-9 '/-]{1,60}?)(?:'s|'re| is| are| got| has been| have been|)? (?:all |now |back |finally |just |already )*(${[
    `(?!${HARMED})[a-z]+ed|put|cut in|hung|rehung|redone|rebuilt|reset|built|sunk|shut|swept|spread|laid`,
    'in|on|up|down|done|finished|complete|set|hung|fixed|replaced|swapped|changed|tightened|patched|repaired|sealed|resealed|caulked|recaulked|glued|secured|adjusted|cleaned|cleared|installed|mounted|fastened|reset|rehung|regrouted|shimmed|leveled|straightened|unclogged|painted|stained|filled|nailed|screwed|bolted|braced|sistered|reattached|refastened|touched up|taken care of',
    'quiet|flat|tight|solid|straight|level|plumb|dry|clear|good|fine|working|works(?: fine| good| now)?|runs (?:fine|good|clear|quiet)|drains (?:fine|good)|closes (?:fine|tight|good|right)|latches(?: fine| good| now)?|locks(?: fine| good| now)?|shuts (?:fine|good|right)|holds|holding',
  ].join(
    '|',
  )})(?: now| again| today| up| in| back| out| down| off)*(?: (?:with|w|on|to|by|and|at|from|all|the|that|both|over)\\b.*)?$`,
);
/** "Sign's solid, hung off it myself", "bath door shuts again on its own": a thing, that it is well, and whatever more of it. */
const IS_WELL =
  /^((?:the |that |those |both |all |new |my |our )*[a-z0-9][a-z0-9 '/-]{1,50}?)(?:(?:'s|'re| is| are| has been| have been)(?: all| now| back| finally| just| already| both| dead| nice and)* (?:solid|tight|snug|right|free|straight|level|plumb|quiet|clear|good|fine|working|done|finished|fixed|set|hung|lit|live|back|skinned|swapped|reset|humming|blowing|riding|running)\b| (?:swings|glides|clears|shuts|closes|latches|locks|opens|runs|drains|hangs|holds|works|shines) (?:free|nice|good|fine|proper|right|again|like|clear|true|steady|all|smooth|on)\b| (?:all )?(?:looks|look) (?:good|great|new|like new|mint)\b).{0,60}$/;
const ILL =
  /\b(?:leak|drip|crack|loose|broke|stuck|stick|rub|drag|rot|miss|short|wrong|worse|dead|bad|soft|wet|except|but|bar|only)/;

const FLAW_GONE =
  /\b(?:drips?|leaks?|squeaks?|buzz|rattle|smell|draft|hum|noise|whistle)(?:'s|s)?(?: is| are)? (?:all )?gone\b/;

/** Read as a flaw, and said to be well: "newel's solid now", "the drip's gone". */
export const tellsWell = remembered((quote): boolean => {
  const said = lowered(quote).trim();
  const well = IS_WELL.exec(said);
  return !NOT_SO.test(said) && (FLAW_GONE.test(said) || (well !== null && !ILL.test(said)));
});

/** Not yet, not so, or only asked for. */
const NOT_SO =
  /\b(?:not|no|never|isn't|aren't|won't|can't|doesn't|don't|didn't|wasn't|need|needs|needed|gotta|should|will|would|gonna|going to|has to|have to|gets|until|till|before|after|if|when|once|unless|almost|half|still|waits?|waiting|wants?|to be|coming|tomorrow|ordered|order|lets|let's|goes|says?|said|except|supposed)\b/;

/**
 * Work that a note tells in words too short to be read alone, and that an open item answers to: the list knows what
 * "seal's on" is. A word of it that opens nothing by itself.
 */
export function workTold(text: string, facts: readonly (Fact | null)[], board: Board): Done[] {
  const out: Done[] = [];
  for (const { said, thing, start, end } of toldIn(text)) {
    if (facts.some((f) => f && READ.has(f.kind) && f.start < end && start < f.end)) continue;
    const rooms = new Set(board.items.flatMap(({ area }) => (area && namesRoom(said, area) ? [area] : [])));
    const search = (words: ReadonlySet<string>, head?: string) =>
      find(
        board,
        { words, area: null, quote: said },
        {
          sure: 0.75,
          anyOf: false,
          fits: (item) =>
            isLive(item) &&
            (head === undefined || (item.head === head && !namesAnother(thing, head, item))) &&
            (!rooms.size || item.area === null || rooms.has(item.area)) &&
            (item.problem !== null ||
              /^(?:replace|install|swap|change|fix|repair|patch|put|hang|set|tighten|adjust|re\w+|seal|caulk|clean)\b/.test(
                item.task,
              )),
        },
      );
    const whole = search(wordsOf(thing));
    // "That crusty outlet in the laundry": by what it is, where its other words were never said.
    const found = whole?.sure ? whole : search(new Set([headOf(thing)]), headOf(thing));
    if (!found?.sure) continue;
    const quote = text.slice(start, end);
    out.push({
      kind: 'done',
      task: `finish ${thing}`,
      who: null,
      quote,
      start,
      end,
      area: null,
      confidence: 0.7,
      rule: 'list/put-right',
    });
  }
  return out;
}

/** The words name a room, or all of it that is not "room". */
const namesRoom = (said: string, area: string): boolean => {
  const words = wordsOf(said);
  return [...wordsOf(area)].filter((word) => word !== 'room').every((word) => words.has(word));
};

/** "Had a disconnect on the truck so that's on": what was in the van is in place. */
const FROM_STOCK =
  /^(?:i |we )?had (?:a|an|one|some|another|two) ([a-z0-9][a-z0-9 '/-]{1,40}?) (?:on|in|at|back at) the (?:truck|van|ute|shop|trailer|shed|garage) (?:so|and) (?:that's|it's|they're|those are|that is) (?:on|in|up|done|down)\b/;
const CAME =
  /^((?:the |our |that |those )?[a-z0-9][a-z0-9 '/-]{1,40}?) (?:finally |just )?(?:showed up|came(?: in)?|arrived|(?:is|are|got) here)\b/;

/** "Put it on", of what came just before. */
const PUT_UP =
  /^(?:i |we )?(?:put|hung|installed|set|mounted|screwed|got|stuck|nailed) (?:it|them|that|those)(?: (?:back|right|all))?(?: (?:on|in|up|down))?$/;

const CLAUSES = /(?:(?!\b(?:and|so|but|cause|because|then)\b)[^.,;!?\n])+/gi;

/** Clauses that say of a thing that it is all right, whichever thing that is. */
const toldIn = remembered((text) => {
  const out: { said: string; thing: string; start: number; end: number }[] = [];
  let before = '';
  for (const { 0: raw, index } of text.matchAll(CLAUSES)) {
    const lead = /^\s*(?:(?:and|so|but|ok|okay|yeah|also|then|plus|alright)\s+)*/i.exec(raw)![0].length;
    const said = lowered(raw.slice(lead).trim());
    if (said.length > 90 || said.length < 6) continue;
    const well = IS_WELL.exec(said);
    const named =
      FROM_STOCK.exec(said)?.[1]?.split(' ').at(-1) ??
      PUT_RIGHT.exec(said)?.[1] ??
      (well && !ILL.test(said.slice(well[1]!.length)) ? well[1] : undefined);
    // "The blind showed up, it's hung": what came.
    const points = PUT_UP.test(said) || (named !== undefined && /^(?:it|they|that|those|both)$/.test(named));
    const thing = points ? CAME.exec(before)?.[1] : named;
    before = said;
    if (thing && !NOT_SO.test(said)) out.push({ said, thing, start: index + lead, end: index + lead + said.length });
  }
  return out;
});

/** Kinds of fact that already say what became of the work. */
const READ: ReadonlySet<string> = new Set(['done', 'problem', 'followUp', 'command', 'decision']);

/** "Homeowner says leave the register", "she doesn't want the shelf", "decided against the crown". */
const OWNER_LEAVES =
  /\b(?:(?:(?:owner|homeowner|customer|client|tenant|landlord|manager|boss|she|he|they)(?:'s| has| have)? (?:just |now )*(?:says?|said|told (?:me|us)|asked us|wants us|decided)(?: to| that)?(?: we| you)?(?: can| should| just)*(?: to)? (?:leave|skip|drop|forget(?: about)?|not (?:do|bother with))|decided (?:against|on no|no)) (?:the |that |those |her |his |any )?)([a-z0-9][a-z0-9 '-]{2,40}?)(?= alone| as (?:is|it is)| at all| out\b| in | for now| after all|[,.;!?\n]|$)/g;
const LEAVES =
  /\bleave (?:the |that |those )([a-z0-9][a-z0-9 '-]{2,40}?) out(?: of (?:it|this|the job))?(?=[,.;!?\n]|$)/g;
const SCRATCHES =
  /\b(?<!(?:don't|dont|didn't|not|to|never|can't|won't) )(?:scratch|skip|forget(?: about)?|never ?mind|cancel|scrap|cross off|(?:don't|dont) bother (?:with|about)|passing on|changed (?:her|his|their) minds? (?:on|about)) (?:the|that|those) ([a-z0-9][a-z0-9 '-]{2,40}?)(?=[,.;!?\n]|$)/g;

/** "Doesn't want us touching the back stoop", "says no way on the cat hole", "does not want our rail no more". */
const UNWILLING =
  /\b(?:(?:doesn't|does not|don't|do not|didn't) want (?:us (?:to )?[a-z]+ )?(?:the|that|our|any|those)|no way on (?:the|that)) ([a-z0-9][a-z0-9 '-]{2,40}?)(?= no more| any ?more| after all| at all| in | on |[,.;!?\n]|$)/g;

/** "Leave the window latch out of it", "scratch the gate": dropped, where no fact says so already. */
export function dropsTold(text: string, facts: readonly (Fact | null)[]): Decision[] {
  return droppedIn(text).filter(
    (told) => !facts.some((f) => f?.kind === 'decision' && f.drops && (f.drops === told.drops || overlap(f, told))),
  );
}

const overlap = (a: { start: number; end: number }, b: { start: number; end: number }) =>
  a.start < b.end && b.start < a.end;

/** Whether words say that a thing is left out or dropped. */
export const tellsDrop = (text: string) => droppedIn(text).length > 0;

const droppedIn = remembered((text): Decision[] => {
  const said = lowered(text);
  return [
    ...said.matchAll(LEAVES),
    ...said.matchAll(SCRATCHES),
    ...said.matchAll(OWNER_LEAVES),
    ...said.matchAll(UNWILLING),
  ].map(({ 0: words, 1: drops, index }) => {
    const quote = text.slice(index, index + words.length);
    const [start, end] = [index, index + words.length];
    return {
      kind: 'decision',
      what: quote,
      drops: drops!,
      quote,
      start,
      end,
      area: null,
      confidence: 0.7,
      rule: 'list/left-out',
    };
  });
});
