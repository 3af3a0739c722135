import { wordsOf } from '../../parser/trade/likeness.ts';
import type { Decision, Done, Fact } from '../../parser/types.ts';
import { remembered } from '../takeoff/reading/remembered.ts';
import { type Board, isLive } from './board.ts';
import { find } from './match.ts';

/** "Seal's on", "bracket tightened with longer screws", "the opener is quiet now": a thing, and that it is all right. */
const PUT_RIGHT = new RegExp(
  `^((?:the |that |those |both |all |new |my |our )*[a-z0-9][a-z0-9 '/-]{1,60}?)(?:'s|'re| is| are| got| has been| have been|)? (?:all |now |back |finally |just |already )*(${[
    'in|on|up|down|done|finished|complete|set|hung|fixed|replaced|swapped|changed|tightened|patched|repaired|sealed|resealed|caulked|recaulked|glued|secured|adjusted|cleaned|cleared|installed|mounted|fastened|reset|rehung|regrouted|shimmed|leveled|straightened|unclogged|painted|stained|filled|nailed|screwed|bolted|braced|sistered|reattached|refastened|touched up|taken care of',
    'quiet|flat|tight|solid|straight|level|plumb|dry|clear|good|fine|working|works(?: fine| good| now)?|runs (?:fine|good|clear|quiet)|drains (?:fine|good)|closes (?:fine|tight|good|right)|latches(?: fine| good| now)?|locks(?: fine| good| now)?|shuts (?:fine|good|right)|holds|holding',
  ].join(
    '|',
  )})(?: now| again| today| up| in| back| out| down| off)*(?: (?:with|w|on|to|by|and|at|from|all|the|that|both|over)\\b.*)?$`,
);
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
    const words = wordsOf(thing);
    const found = find(
      board,
      { words, area: null, quote: said },
      {
        sure: 0.75,
        anyOf: false,
        fits: (item) =>
          isLive(item) &&
          (item.problem !== null ||
            /^(?:replace|install|swap|change|fix|repair|patch|put|hang|set|tighten|adjust|re\w+|seal|caulk|clean)\b/.test(
              item.task,
            )),
      },
    );
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

const CAME =
  /^((?:the |our |that |those )?[a-z0-9][a-z0-9 '/-]{1,40}?) (?:finally |just )?(?:showed up|came(?: in)?|arrived|(?:is|are|got) here)\b/;

/** "Put it on", of what came just before. */
const PUT_UP =
  /^(?:i |we )?(?:put|hung|installed|set|mounted|screwed|got|stuck|nailed) (?:it|them|that|those)(?: (?:back|right|all))?(?: (?:on|in|up|down))?$/;

/** Clauses that say of a thing that it is all right, whichever thing that is. */
const toldIn = remembered((text) => {
  const out: { said: string; thing: string; start: number; end: number }[] = [];
  let before = '';
  for (const { 0: raw, index } of text.matchAll(/[^.,;!?\n]+/g)) {
    const lead = /^\s*(?:(?:and|so|but|ok|okay|yeah|also|then|plus|alright)\s+)*/i.exec(raw)![0].length;
    const said = raw.slice(lead).trim().toLowerCase().replaceAll('’', "'");
    if (said.length > 90 || said.length < 6) continue;
    const named = PUT_RIGHT.exec(said)?.[1];
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

const LEAVES =
  /\bleave (?:the |that |those )([a-z0-9][a-z0-9 '-]{2,40}?) out(?: of (?:it|this|the job))?(?=[,.;!?\n]|$)/g;
const SCRATCHES =
  /(?<=^|[.;!?,\n]\s*)(?:(?:yeah|yes|ok|okay|so|and|then|oh|actually|well|hey|um) )*(?:scratch|skip|forget(?: about)?|never ?mind|cancel|scrap) (?:the|that|those) ([a-z0-9][a-z0-9 '-]{2,40}?)(?=[,.;!?\n]|$)/g;

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
  const said = text.toLowerCase().replaceAll('’', "'");
  return [...said.matchAll(LEAVES), ...said.matchAll(SCRATCHES)].map(({ 0: words, 1: drops, index }) => {
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
