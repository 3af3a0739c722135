import { lengthText } from '../../parser/quantities/format.ts';
import type { Command, Fact } from '../../parser/types.ts';
import type { Reply } from '../http/api.ts';
import { TAKEN } from '../jobs/list/endings/index.ts';
import { perhapsDoneBy } from '../jobs/list/perhapsDone.ts';
import { isLive } from '../jobs/live.ts';
import type { Item, JobState } from '../jobs/types.ts';
import { answer } from './answers.ts';
import { answerLine, checkText, decided, itemText, orderText } from './lineText.ts';
import { orderLines, unsureGoods } from './orderChanges.ts';
import { moneyWords, taskWords, waitWords } from './wording.ts';

export { amount, checkText, decided, itemText, orderText, thingText } from './lineText.ts';

type Line = Reply['lines'][number];

const MOST = 8;

/** What a note changed, short enough to read on a ladder: from the list before it to the list after. */
export function replyTo(before: JobState, after: JobState, noteId: string, facts: Fact[]): Reply {
  const asked = facts.filter((f): f is Command => f.kind === 'command' && f.verb === 'ask');
  const onlyAsked = asked.length > 0 && asked.length === facts.length;
  const told = onlyAsked ? [] : changes(before, after, facts);
  const answers = asked.flatMap((question) => answer(after, question));
  const lines = told.length + answers.length ? [...told, ...answers] : [nothing(facts)];
  const ask = after.questions.find((q) => q.noteId === noteId)?.ask ?? null;
  return { noteId, facts, lines, ask, unread: false };
}

function changes(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const out = [
    ...itemLines(before, after),
    ...unsureLine(before, after),
    ...orderLines(before, after, facts),
    ...unsureGoods(before, after, facts),
    ...stockLines(before, after, facts),
    ...checkLines(before, after),
    ...noted(facts),
  ];
  const short: Line[] =
    out.length > MOST + 1 ? [...out.slice(0, MOST), answerLine(`and ${out.length - MOST} more on the list`)] : out;
  // However long the reply, a caution is not left out.
  return [...short, ...cautionLines(before, after)];
}

const nothing = (facts: readonly Fact[]): Line =>
  answerLine(facts.length ? 'Kept. Nothing on the list changes.' : 'Kept. Nothing in it for the list.');

const CLOSED: Partial<Record<Item['state'], string>> = { dropped: 'Dropped', 'signed off': 'Signed off' };

function itemLines(before: JobState, after: JobState): Line[] {
  const was = new Map(before.items.map((i) => [i.key, i]));
  const today = after.asOf.slice(0, 10);
  return after.items.flatMap((item): Line[] => {
    const old = was.get(item.key);
    const text = itemText({ ...item, task: taskWords(item.task) }, today);
    const line = (kind: Line['kind'], words: string, more = ''): Line[] => [
      { kind, text: `${words}: ${text}${more}`, item: item.number },
    ];
    const closed = CLOSED[item.state] ?? (item.problem === null ? 'Done' : 'Fixed');
    if (item.state === 'unsure') return [];
    // What was never on the list needs no number.
    if (!old) return isLive(item) ? line('opened', `New, no. ${item.number}`) : line('closed', closed);
    if (isLive(old) && !isLive(item))
      return item.history.at(-1)?.what === TAKEN
        ? line('closed', `Taken as done, no. ${item.number}`, `. If not, say "reopen ${item.number}"`)
        : line('closed', `${closed}, no. ${item.number}`);
    if (old.state !== 'signed off' && item.state === 'signed off')
      return line('closed', `${closed}, no. ${item.number}`);
    if (!isLive(old) && isLive(item))
      return line('opened', `${old.state === 'unsure' ? 'On the list' : 'Open again'}, no. ${item.number}`);
    if (old.who !== item.who && item.history.at(-1)?.what.startsWith('given to'))
      return line('changed', `Given to ${item.who}, no. ${item.number}`);
    if (old.history.length === item.history.length) return [];
    if (perhapsDoneBy(item) !== null)
      return line('changed', `No. ${item.number}`, `. If so, say "${item.number} is done"`);
    return line(
      'changed',
      `${item.history.at(-1)?.what === 'said again' ? 'The same as' : 'Added to'} no. ${item.number}`,
    );
  });
}

/** What was heard and is likelier no item: in one line, since it asks for no more than a look. */
function unsureLine(before: JobState, after: JobState): Line[] {
  const known = new Set(before.items.map((i) => i.key));
  const heard = after.items.filter((i) => i.state === 'unsure' && !known.has(i.key));
  if (!heard.length) return [];
  const named = heard.map((item) => `${item.number}. ${taskWords(item.task)}`).join('; ');
  return [answerLine(`Not sure, so kept apart: ${named}. To list it, say "keep ${heard[0]!.number}"`)];
}

/** What is left in the van, where the note told of having, using or returning it. */
function stockLines(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const told = new Set(
    facts.flatMap((f) => (f.kind === 'material' && /^(?:have|used|returned)$/.test(f.status) ? f.item : [])),
  );
  const was = new Map(before.onHand.map((h) => [`${h.item} ${h.size}`, h.quantity]));
  return after.onHand
    .filter((h) => told.has(h.item) && was.get(`${h.item} ${h.size}`) !== h.quantity)
    .map((h) => ({ kind: 'changed', text: `On hand now: ${orderText(h)}`, item: null }));
}

function checkLines(before: JobState, after: JobState): Line[] {
  const told = new Set(before.checks.map(checkText));
  return after.checks.flatMap((check): Line[] =>
    told.has(checkText(check)) ? [] : [{ kind: 'check', text: checkText(check), item: check.item }],
  );
}

function cautionLines(before: JobState, after: JobState): Line[] {
  const planned = (plan: JobState['early'][number]) => `${plan.task} ${plan.plannedOn} ${plan.readyOn}`;
  const early = new Set(before.early.map(planned));
  const hazards = new Set(before.cautions.map((c) => c.hazard));
  return [
    ...after.early.flatMap((plan): Line[] =>
      early.has(planned(plan))
        ? []
        : [
            {
              kind: 'caution',
              text: `Too early: ${plan.task} on ${plan.plannedOn}. It ${waitWords(plan.waitingFor) ?? 'waits'}: ready ${plan.readyOn}${plan.readyAt ? ` at ${plan.readyAt}` : ''}.`,
              item: plan.item,
            },
          ],
    ),
    ...after.cautions.flatMap((caution): Line[] =>
      hazards.has(caution.hazard) ? [] : [{ kind: 'caution', text: caution.text, item: caution.items[0] ?? null }],
    ),
  ];
}

const MOST_SIZES = 4;

/** What changes no line of the list and is kept all the same, read back so that a wrong number is seen. */
function noted(facts: readonly Fact[]): Line[] {
  const kept = (text: string): Line => ({ kind: 'changed', text, item: null });
  const sizes = new Map<string, string[]>();
  for (const f of facts)
    if (f.kind === 'measurement') sizes.set(f.of, [...(sizes.get(f.of) ?? []), lengthText(f.exact, f.unit)]);
  const told = [...sizes].slice(0, MOST_SIZES).map(([of, values]) => `${of} ${values.join(' x ')}`);
  if (sizes.size > MOST_SIZES) told.push(`and ${sizes.size - MOST_SIZES} more`);
  return [
    ...(told.length ? [kept(`Measured: ${told.join('; ')}`)] : []),
    ...facts.flatMap((f) => {
      if (f.kind === 'decision') return kept(`Decided: ${decided(f.what)}`);
      if (f.kind === 'spending') return kept(`Spent: ${moneyWords(f.amount, f.currency)}`);
      return [];
    }),
  ];
}
