import type { Fact, FollowUp } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import { waitText } from '../plans/dates.ts';
import { cutAround } from '../spans/cut.ts';
import type { Talk } from '../talk.ts';
import { type Answer, answersFor } from './signs.ts';
import { DAYS } from './table.ts';

let weights: Weights | undefined;

/**
 * The facts of a note with each plan's days: of those told in its words and near it, the ones that weights learned from
 * annotated notes (`table.ts`) hold to be its own.
 */
export function dated(talk: Talk, facts: readonly Fact[]): Fact[] {
  const plans = facts.filter((f) => f.kind === 'followUp');
  if (!plans.length || !talk.chunks.some((c) => c.time && !c.time.past)) return [...facts];
  const cut = cutAround(talk, plans);
  const rest = facts.filter((f) => f.kind === 'done' || f.kind === 'problem');
  return facts.map((fact) => {
    if (fact.kind !== 'followUp') return fact;
    const others = plans.filter((p) => p !== fact);
    return withDays(fact, best(answersFor({ talk: cut, plan: fact, plans: others, rest })));
  });
}

function best(answers: readonly Answer[]): Answer {
  weights ??= columns(DAYS, ['days']).days;
  const worth = answers.map(({ signs }) => dot(weights!, signs));
  return answers[worth.indexOf(Math.max(...worth))]!;
}

function withDays(plan: FollowUp, { due, notBefore }: Answer): FollowUp {
  const wait = notBefore?.time.hours !== undefined ? waitText(notBefore.time) : null;
  return {
    ...plan,
    due: due?.last ?? null,
    notBefore: notBefore?.first ?? null,
    waitingFor: notBefore ? (wait ?? plan.waitingFor) : null,
  };
}
