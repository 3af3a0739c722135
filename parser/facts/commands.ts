import { lowered } from '../trade/words.ts';
import type { Command } from '../types.ts';
import { base } from './make.ts';
import type { Talk } from './talk.ts';

type Rule = { verb: Command['verb']; pattern: RegExp; question?: Command['question'] };

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
  {
    verb: 'ask',
    question: 'order',
    pattern:
      /^what(?:'s| is| do| all do)?(?: it)? ?(?:i|we|you)? ?(?:need|to buy|left to buy|on the order|have to (?:buy|get|pick up))(?: (?:from|at|for) (?:the )?(.+))?\??$/,
  },
  {
    verb: 'ask',
    question: 'waiting',
    pattern: /^what(?:'s| is| are we)? (?:still )?waiting(?: on| for)?(?: (?:in|at) (?:the )?(.+))?\??$/,
  },
  {
    verb: 'ask',
    question: 'ready',
    pattern: /^what(?:'s| is| can i| can we) (?:ready|work on|do next|next)(?: (?:in|at) (?:the )?(.+))?\??$/,
  },
  {
    verb: 'ask',
    question: 'left',
    pattern:
      /^what(?:'s| is| all is|s)? (?:still )?(?:left|open|to do)(?: to do)?(?: (?:in|at|for|on) (?:the )?(.+))?\??$/,
  },
  {
    verb: 'ask',
    question: 'list',
    pattern: /^(?:read|show|give|send) me (?:back )?(?:the |my )?(?:whole )?(?:punch )?list$/,
  },
  { verb: 'ask', question: 'order', pattern: /^(?:read|show|give|send) me (?:the |my )?(?:order|shopping list)$/ },
  {
    verb: 'ask',
    question: 'measurements',
    pattern:
      /^(?:what(?:'s| was| are| were)|read me|show me) (?:the |my )?measurements?(?: (?:for|of|in|on) (?:the )?(.+))?\??$/,
  },
];

const WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const numberOf = (said: string | undefined) =>
  said === undefined ? null : /^\d+$/.test(said) ? Number(said) : WORDS.indexOf(said) > 0 ? WORDS.indexOf(said) : null;

/** Instructions to the list and questions about it. A rule must cover the whole clause. */
export function readCommands(talk: Talk): Command[] {
  return talk.frames.flatMap((frame): Command[] => {
    const said = lowered(talk.text.slice(frame.start, frame.end))
      .replace(/[.!?]+$/, '')
      .trim();
    for (const rule of RULES) {
      const match = rule.pattern.exec(said);
      if (!match) continue;
      // "Make that two more" inside a note corrects its own words; alone it corrects the list.
      if (rule.verb === 'change' && talk.frames.length > 1) continue;
      const groups = match.slice(1).filter((g) => g !== undefined);
      const numbers = groups.filter((g) => numberOf(g) !== null);
      const other = rule.verb === 'same' ? numbers.pop() : undefined;
      const number = numberOf(numbers[0]);
      const words = groups.filter((g) => numberOf(g) === null && !/^(it|that|that one)$/.test(g));
      return [
        {
          ...base(talk, frame, `command/${rule.verb}`),
          kind: 'command',
          verb: rule.verb,
          number: rule.verb === 'change' ? null : number,
          about: rule.verb === 'ask' ? (words[0] ?? null) : null,
          to:
            rule.verb === 'same'
              ? String(numberOf(other))
              : rule.verb === 'move' || rule.verb === 'change'
                ? (match.at(-1) ?? null)
                : null,
          question: rule.question ?? null,
        },
      ];
    }
    return [];
  });
}
