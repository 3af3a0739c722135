import { countAt } from './counts.ts';
import { addWorkingDays } from './days.ts';
import type { Rule } from './talk.ts';
import { SPENT } from './waits.ts';

/** "Ten business days", "in five working days". */
export const workingDays: Rule = (talk, i) => {
  const at = countAt(talk, i);
  if (!at || !/^(?:business|working|work)$/.test(talk.word(at.until)) || talk.word(at.until + 1) !== 'days')
    return null;
  if (SPENT.test(talk.lead(i))) return null;
  const before = talk.word(i - 1);
  return {
    from: before === 'in' || before === 'within' ? i - 1 : i,
    until: at.until + 2,
    date: addWorkingDays(talk.today, at.count),
    relation: before === 'within' ? 'by' : 'on',
    rule: 'time/working-days',
  };
};
