import { lowered } from '../trade/words.ts';
import type { Command } from '../types.ts';
import { isGoods } from './chunks.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import type { Talk } from './talk.ts';

type Rule = { verb: Exclude<Command['verb'], 'ask'>; pattern: RegExp };

const N = '(?:(?:number|no\\.?|item|#)\\s*)?';
const NUMBERED = '(?:number|no\\.?|item|#)\\s*';
const COUNT =
  '(\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty)';

/** Sentences spoken to the list itself. Each pattern is matched against one whole clause, lower case. */
const RULES: readonly Rule[] = [
  {
    verb: 'done',
    pattern: new RegExp(
      `^(?:mark )?(?:number|no\\.?|item|#)\\s*${COUNT}(?: is|'s)? (?:all )?(?:done|finished|complete)$`,
    ),
  },
  {
    verb: 'done',
    pattern: new RegExp(`^(?:mark |tick |check off )?${COUNT} (?:is |as )?(?:all )?(?:done|off|finished)$`),
  },
  { verb: 'reopen', pattern: new RegExp(`^(?:reopen|open up|bring back|keep) ${N}${COUNT}(?: again)?$`) },
  { verb: 'drop', pattern: new RegExp(`^(?:drop|forget|cancel|scratch|delete|remove) ${N}${COUNT}$`) },
  { verb: 'undo', pattern: new RegExp(`^undo ${N}${COUNT}$`) },
  {
    verb: 'split',
    pattern: new RegExp(`^(?:split|separate|take apart|pull apart) ${N}${COUNT}(?: (?:up|off|apart|in two))?$`),
  },
  {
    verb: 'split',
    pattern: new RegExp(
      `^${NUMBERED}${COUNT} (?:is|are) (?:really )?two (?:different |separate )?(?:things|items|ones|jobs)$`,
    ),
  },
  {
    verb: 'split',
    pattern:
      /^(?:no )?(?:those|these|they|that's|thats|that|it's)(?: are|'re| is)? (?:really |actually )?(?:two|2) (?:different |separate )?(?:things|items|ones|jobs|problems)$|^(?:those|these|they)(?: are|'re) (?:not the same(?: thing| one)?|different(?: things| ones)?|separate(?: things| items)?)$|^(?:that's|thats|it's) (?:a different one|not the same(?: one| thing)?|a separate one)$/,
  },
  {
    verb: 'same',
    pattern: new RegExp(
      `^(?:(?:that's|thats|that is|it's|that one's|this is|that one is|${N}${COUNT}(?:'s| is)) )?(?:the )?same (?:thing |one |item )?as ${N}${COUNT}$`,
    ),
  },
  { verb: 'same', pattern: new RegExp(`^(?:join|merge|combine) ${N}${COUNT} (?:and|with|to|into) ${N}${COUNT}$`) },
  {
    verb: 'move',
    pattern: new RegExp(`^(?:move|put) (?:${N}${COUNT}|(it|that|that one)) (?:to|in|under|over to) (?:the )?(.+)$`),
  },
  {
    verb: 'undo',
    pattern:
      /^(?:scratch that|undo(?: that| it| the last (?:one|thing))?|take that (?:back|off)|never ?mind that last one|delete that)$/,
  },
  {
    verb: 'change',
    pattern:
      /^(?:make (?:it|that|them)|change (?:it|that) to|should be|that should be|it should be|correction,?) (.+)$/,
  },
];

const WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const numberOf = (said: string | undefined) =>
  said === undefined ? null : /^\d+$/.test(said) ? Number(said) : WORDS.indexOf(said) > 0 ? WORDS.indexOf(said) : null;

/** "Make it thirteen sticks of casing": how many goods there shall be, which is no word to the list. */
const countsGoods = ({ chunks }: Frame): boolean => chunks.some((c) => c.quantity) && chunks.some(isGoods);

/** Instructions to the list. A rule must cover the whole clause. */
export function readCommands(talk: Talk): Command[] {
  return talk.frames.flatMap((frame): Command[] => {
    const said = lowered(talk.text.slice(frame.start, frame.end))
      .replace(/[.!?]+$/, '')
      .trim();
    for (const rule of RULES) {
      const match = rule.pattern.exec(said);
      if (!match) continue;
      // "Make that two more" inside a note corrects its own words; alone it corrects the list.
      if (rule.verb === 'change' && (talk.frames.length > 1 || countsGoods(frame))) continue;
      const groups = match.slice(1).filter((g) => g !== undefined);
      const numbers = groups.filter((g) => numberOf(g) !== null);
      const other = rule.verb === 'same' ? numbers.pop() : undefined;
      const number = numberOf(numbers[0]);
      return [
        {
          ...base(talk, frame, `command/${rule.verb}`),
          kind: 'command',
          verb: rule.verb,
          number: rule.verb === 'change' ? null : number,
          about: null,
          to:
            rule.verb === 'same'
              ? String(numberOf(other))
              : rule.verb === 'move' || rule.verb === 'change'
                ? (match.at(-1) ?? null)
                : null,
          question: null,
        },
      ];
    }
    return [];
  });
}
