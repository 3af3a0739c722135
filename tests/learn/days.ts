/**
 * Learns from the annotated notes which of the days told near a plan are its own, and writes `parser/facts/days/table.ts`.
 * With `--folds` it only tells how often plans of notes left out of the learning are dated rightly.
 */
import { answersFor } from '../../parser/facts/days/signs.ts';
import { cutAround } from '../../parser/facts/spans/cut.ts';
import { type Choice, choose, learn, SETTINGS } from './choice.ts';
import { type Laid, laidOpen, spansOf } from './corpus.ts';
import { linesOf, writeTable } from './table.ts';

/** Weights under this are left out of the table. */
const LEAST = 0.03;
/** Signs whose weight stays under this are learned without. Found by folds. */
const TELLING = 0.12;
const FOLDS = 8;
const HOW = { ...SETTINGS, atLeast: 4 };

interface Example extends Choice {
  tuned: boolean;
  /** Has the plan a day at all? */
  dated: boolean;
}

const examples = (await laidOpen()).flatMap(examplesOf);
if (process.argv.includes('--folds')) judge();
else
  writeTable(
    'parser/facts/days/table.ts',
    'DAYS',
    'Written by tests/learn/days.ts: a sign of how a plan is dated, and hundredths for it.',
    linesOf([learnFew(examples)], LEAST),
  );

/** Learns once for which signs tell much, and again from those alone, so that they take over what the others told. */
function learnFew(from: readonly Example[]): Map<string, number> {
  const telling = learn(from, HOW);
  const few = (signs: readonly string[]) => signs.filter((s) => Math.abs(telling.get(s) ?? 0) >= TELLING);
  return learn(
    from.map((e) => ({ ...e, answers: e.answers.map((a) => ({ ...a, signs: few(a.signs) })) })),
    HOW,
  );
}

/** A choice for every annotated plan; only both days right are worth anything. */
function examplesOf({ note, talk, tuned }: Laid, n: number): Example[] {
  const plans = spansOf(note, 'followUp');
  const rest = [...spansOf(note, 'done'), ...spansOf(note, 'problem')];
  const cut = cutAround(talk, plans);
  return note.gold.followUps.map(({ due, notBefore }, k) => {
    const others = plans.filter((_, j) => j !== k);
    const answers = answersFor({ talk: cut, plan: plans[k]!, plans: others, rest }).map((a) => ({
      signs: a.signs,
      worth: Number((a.due?.last ?? null) === due && (a.notBefore?.first ?? null) === notBefore),
    }));
    return { note: n, tuned, dated: (due ?? notBefore) !== null, answers };
  });
}

function judge(): void {
  const judged = Array.from({ length: FOLDS }, (_, k) => {
    const weights = learnFew(examples.filter((e) => e.note % FOLDS !== k));
    return examples
      .filter((e) => e.note % FOLDS === k)
      .map((e) => ({ ...e, right: e.answers[choose(e, weights)]!.worth > 0 }));
  }).flat();
  const told = (name: string, part: typeof judged) =>
    console.log(
      `${name}: ${part.length} plans, dated rightly ${(part.filter((e) => e.right).length / part.length).toFixed(3)},` +
        ` possible ${(part.filter((e) => e.answers.some((a) => a.worth > 0)).length / part.length).toFixed(3)}`,
    );
  told('all', judged);
  told(
    'notes no rule was written beside',
    judged.filter((e) => !e.tuned),
  );
  told(
    'plans with a day',
    judged.filter((e) => e.dated),
  );
}
