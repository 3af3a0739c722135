import type { Done, Fact, FollowUp } from '../../../parser/types.ts';

/** What a fact keeps when it is told anew as of another kind: where it stands, and how sure that is. */
export const spanOf = ({ quote, start, end, area, confidence, rule }: Fact) => ({
  quote,
  start,
  end,
  area,
  confidence,
  rule,
});

/** Finished work told anew as work to come. */
export const toCome = (fact: Done, task: string, due: string | null): FollowUp => ({
  ...spanOf(fact),
  kind: 'followUp',
  task,
  who: fact.who,
  due,
  notBefore: null,
  waitingFor: null,
  condition: null,
});
