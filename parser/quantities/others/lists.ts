import type { Line } from '../line.ts';
import type { ClaimRule } from './claim.ts';

/** The numbers of a list written into the note, "1. ... 2. ... 3. ..." or "1) ... 2) ...": each is one more than the last. */
export function listNumbers(line: Line): ReadonlySet<number> {
  const found: number[] = [];
  line.tokens.forEach((token, i) => {
    const mark = line.tokens[i + 1];
    const after = line.tokens[i + 2];
    const numbers = token.kind === 'number' && token.text === String(found.length + 1);
    const opens = i === 0 || line.tokens[i - 1]!.kind === 'break';
    const listed = after?.spaced && (after.kind === 'word' || (opens && after.kind === 'number'));
    if (numbers && mark && /^[.)]$/.test(mark.text) && !mark.spaced && listed) found.push(i);
  });
  return new Set(found.length > 1 ? found : []);
}

/** "14 - toilet rocks": a room, unit or drawing number put before what is said of it. */
export const heading: ClaimRule = (line, i) => {
  const [before, token, dash, after] = [line.tokens[i - 1], line.tokens[i]!, line.tokens[i + 1], line.tokens[i + 2]];
  if (token.kind !== 'number' || !/^\d{1,4}$/.test(token.text) || !dash || !/^[-–—]$/.test(dash.text)) return null;
  const stands = dash.spaced && after?.spaced && after.kind === 'word' && !/^(?:no|and|or|to)$/.test(after.word);
  const opens =
    before === undefined ||
    before.kind === 'break' ||
    !/^(?:need|needs|get|used|have|got|at|to|about|is|by|x|,)$/.test(before.word);
  return stands && opens ? { until: i + 1, kind: 'label' } : null;
};

const THINGS = /^(?:things?|items?|list|points|notes|jobs|questions)$/;
const OPENING =
  /^(?:the|a|an|my|his|her|their|our|i|we|he|she|they|it|you|somebody|whoever|there's|that|this|put|find|get|ask|check|call|fix|caulk|bring)$/;

/** "Three things one the fan is in two the island has no power three call him": numbers that open what is said. */
export function spokenList(line: Line): ReadonlySet<number> {
  const found: number[] = [];
  if (!line.tokens.some(({ word }) => THINGS.test(word))) return new Set();
  const words = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
  line.tokens.forEach((token, i) => {
    if (
      token.word === words[found.length] &&
      OPENING.test(line.word(i + 1)) &&
      !/^(?:the|at|by|of|and)$/.test(line.word(i - 1))
    )
      found.push(i);
  });
  return new Set(found.length > 1 ? found : []);
}
