import { wordsOf } from '../../../../parser/trade/likeness.ts';
import { lowered } from '../../../../parser/trade/words.ts';
import type { FollowUp, Problem } from '../../../../parser/types.ts';
import type { Setting } from '../setting.ts';

/** What opens an item: a flaw that stands, or work to do. */
export type Opens = Problem | FollowUp;

/** So many words on either side of what was said are looked at. */
const AROUND = 4;

const wordsIn = (text: string): string[] => lowered(text).match(/[a-z][a-z']*/g) ?? [];
const upTo = (most: number, n: number) => Math.min(most, Math.floor(n));

/** What speaks for and against a fact's being an item of the list: how it was read, how it was said, what it is called. */
export function signsOfDoubt({ lead, tail, met }: Setting, fact: Opens): string[] {
  const said = wordsIn(fact.quote);
  const name = fact.kind === 'problem' ? `${fact.thing} ${fact.defect}` : fact.task;
  const named = wordsIn(name);
  const held = new Set(said);
  const own = named.filter((word) => held.has(word)).length / Math.max(1, named.length);
  return [
    'any',
    fact.kind,
    `rule ${fact.rule}`,
    `sure ${upTo(9, fact.confidence * 10)} ${fact.kind}`,
    `long ${upTo(6, said.length / 3)}`,
    `first ${said[0] ?? ''}`,
    `last ${said.at(-1) ?? ''}`,
    ...[...held].map((word) => `word ${word}`),
    ...new Set(
      wordsIn(lead)
        .slice(-AROUND)
        .map((word) => `before ${word}`),
    ),
    ...new Set(
      wordsIn(tail)
        .slice(0, AROUND)
        .map((word) => `after ${word}`),
    ),
    ...new Set(named.map((word) => `name ${word}`)),
    `opens ${fact.kind} ${named[0] ?? ''}`,
    `name size ${upTo(6, wordsOf(name).size)}`,
    `name said ${upTo(4, own * 4)}`,
    `area ${fact.area !== null}`,
    `met ${upTo(4, met.length)}`,
    ...(fact.kind === 'followUp'
      ? [`due ${fact.due !== null}`, `not before ${fact.notBefore !== null}`, `who ${fact.who !== null}`]
      : [`suspected ${fact.suspected}`]),
  ];
}
