import { remembered } from '../../../parser/remembered.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { Fact, Material } from '../../../parser/types.ts';
import { NUMBER, numberOf } from '../said/numbers.ts';

const NAME = "((?:(?!\\b(?:and|but|so|or|the|an?|ones?|that|is|it|on|in|for|just)\\b)[a-z0-9/'-]+ ?){1,4}?)";
const PLACE = ' (?:on|in|for|under|to|at|by|over|with|above|behind) [^.;,!?\\n]{1,30}?';
const SURELY = '(?: (?:needed|required|please|to buy|to get))?';

/** "Asks for a peephole in the back door, 1", "a new seat one of them", "so a new hose just the one". */
const SAYS = new RegExp(
  `\\b(?:(?:asks?|asked) for|wants?|needs?|gets?|put|fit|be|so|replace with) (?:an?|another|new) (?:new )?${NAME}(?:${PLACE})?(?:, (?:(?:just|need|only) )?(?:the )?(${NUMBER})(?: of (?:them|those|these))?| just (?:the )?(${NUMBER})| (${NUMBER}) of (?:them|those|these))${SURELY}(?=[.,;!?\\n]|$)`,
  'g',
);

const found = remembered((text): readonly Material[] =>
  [...lowered(text).matchAll(SAYS)].flatMap(({ 0: whole, 1: name, 2: a, 3: b, 4: c, index }) => {
    const item = name!.trim().replace(/ then$/, '');
    const count = numberOf(a ?? b ?? c ?? '');
    if (!count || /^(?:new|same|other|few|couple|bit|half|day|hand|look|minute)$/.test(item)) return [];
    const [start, end] = [index, index + whole.length];
    return {
      kind: 'material',
      item,
      size: null,
      specs: [],
      quantity: count,
      exact: String(count),
      atLeast: null,
      unit: 'each',
      status: 'need',
      counts: 'plain',
      quote: text.slice(start, end),
      start,
      end,
      area: null,
      confidence: 0.8,
      rule: 'list/need',
    };
  }),
);

/** Goods named first and counted behind their place, where no fact says so already. */
export const countedBehind = (text: string, facts: readonly (Fact | null)[]): Material[] =>
  found(text).filter((told) => !facts.some((f) => f?.kind === 'material' && f.start < told.end && told.start < f.end));
