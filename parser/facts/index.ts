import type { Fact, FollowUp } from '../types.ts';
import { isNounTerm } from './chunks.ts';
import { readCommands } from './commands.ts';
import { readDecisions } from './decisions.ts';
import { readDone } from './done.ts';
import { readFollowUps } from './followUps.ts';
import { readMaterials } from './goods/index.ts';
import { readMeasurements } from './measurements/index.ts';
import { readProblems } from './problems.ts';
import { withoutSmallTalk } from './smallTalk.ts';
import { weighed } from './spans/index.ts';
import { readSpending } from './spending.ts';
import type { Talk } from './talk.ts';

/** Every fact of a note, in the order of their words. A note that is a command to the list gives nothing else. */
export function readFacts(talk: Talk): Fact[] {
  const { spoken, commands, ...told } = factsByRule(talk);
  const weighedFacts = weighed(spoken, told);
  const facts: Fact[] = [
    ...commands,
    ...told.goods,
    ...told.measurements,
    ...weighedFacts,
    ...leftOut(spoken, told.followUps, weighedFacts),
    ...readDecisions(spoken),
    ...readSpending(spoken),
  ];
  return withoutSmallTalk(spoken, facts).sort((a, b) => a.start - b.start || a.end - b.end);
}

/** A whole sentence that orders work on a thing of the trade ("caulk the window in the hall."). */
function isPlainOrder(talk: Talk, { rule, start, end }: FollowUp): boolean {
  const frame = talk.frames.find((f) => f.start <= start && end <= f.end);
  if (rule !== 'follow-up/imperative' || frame?.use !== 'work' || frame.verbAt > 0) return false;
  const alone = talk.frames.filter((f) => f.sentence === frame.sentence).length === 1;
  return alone && frame.rest.some((c) => isNounTerm(c) && c.term!.kind !== 'area');
}

/** Plain orders that the weighing left without any fact: a lost one costs a trip. */
const leftOut = (talk: Talk, orders: readonly FollowUp[], taken: readonly Fact[]): FollowUp[] =>
  orders.filter((order) => isPlainOrder(talk, order) && !taken.some((f) => f.start < order.end && order.start < f.end));

/** What each reader makes of the talk by its own rules, before they are weighed against one another. */
export function factsByRule(talk: Talk) {
  const commands = readCommands(talk);
  const spoken = {
    ...talk,
    frames: talk.frames.filter((f) => !commands.some((c) => c.start <= f.start && f.end <= c.end)),
  };
  const materials = readMaterials(spoken);
  const measurements = readMeasurements(spoken, materials.used);
  const problems = readProblems(spoken);
  const done = readDone(spoken, problems);
  const followUps = readFollowUps(spoken, done, problems);
  return { spoken, commands, goods: materials.facts, measurements, problems, done, followUps };
}
