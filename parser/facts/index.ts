import type { Fact } from '../types.ts';
import { readCommands } from './commands.ts';
import { dated } from './days/index.ts';
import { readDecisions } from './decisions.ts';
import { readDone } from './done.ts';
import { readFollowUps } from './followUps.ts';
import { readMaterials } from './goods/index.ts';
import { readMeasurements } from './measurements/index.ts';
import { plainlyNamed } from './plainNames.ts';
import { readProblems } from './problems.ts';
import { readQuestions, withoutQuestions } from './questions.ts';
import { withoutSmallTalk } from './smallTalk.ts';
import { weighed } from './spans/index.ts';
import { readSpending } from './spending.ts';
import type { Talk } from './talk.ts';
import { worded } from './wording.ts';

/** Every fact of a note, in the order of their words. A note that is a command to the list gives nothing else. */
export function readFacts(talk: Talk): Fact[] {
  const { spoken, commands, ...told } = factsByRule(talk);
  const facts: Fact[] = [
    ...commands,
    ...told.goods,
    ...told.measurements,
    ...dated(spoken, weighed(spoken, told)).map((fact) => worded(spoken, plainlyNamed(fact))),
    ...readDecisions(spoken),
    ...readSpending(spoken),
  ];
  return withoutSmallTalk(spoken, facts).sort((a, b) => a.start - b.start || a.end - b.end);
}

/** What each reader makes of the talk by its own rules, before they are weighed against one another. */
export function factsByRule(talk: Talk) {
  const asked = readQuestions(talk);
  const told = withoutQuestions(talk, asked);
  const ordered = readCommands(told);
  const commands = [...ordered, ...asked];
  const spoken = {
    ...told,
    frames: told.frames.filter((f) => !ordered.some((c) => c.start <= f.start && f.end <= c.end)),
  };
  const materials = readMaterials(spoken);
  const measurements = readMeasurements(spoken, materials.used);
  const problems = readProblems(spoken);
  const done = readDone(spoken, problems);
  const followUps = readFollowUps(spoken, done, problems);
  return { spoken, commands, goods: materials.facts, measurements, problems, done, followUps };
}
