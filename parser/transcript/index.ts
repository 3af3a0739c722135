import { tokenise } from '../hearing/tokens.ts';
import { builtIn } from '../trade/index.ts';
import type { NoteReading, ReadOptions } from '../types.ts';
import { captionsIn, isCaptions } from './captions.ts';
import { merged } from './merge.ts';
import { passagesOf } from './passages.ts';
import { placed } from './place.ts';
import { isStamped, stampedIn } from './stamped.ts';
import { worthKeeping } from './weigh.ts';

/** True for WebVTT, SubRip, and plain lines that begin with `[m:ss]`. */
export const isTranscript = (text: string): boolean => isCaptions(text) || isStamped(text);

/** An area named by one speaker holds for what is said after it, for this many seconds. */
const AREA_HOLDS = 300;

/**
 * Reads a timed transcript of up to hours: its cues are joined into talk, each passage is read as a note, and what
 * comes out is thinned to what a person would have written down. Offsets point into the file as it stands.
 *
 * @param read reads one passage
 * @returns facts in the order of their words, each `at` its second. Never throws on any text.
 */
export function readTranscript(
  text: string,
  options: ReadOptions,
  read: (words: string, options: ReadOptions) => NoteReading,
): NoteReading {
  const vocabulary = options.vocabulary ?? builtIn();
  const isName = (label: string) => {
    const found = vocabulary.match(tokenise(label), 0);
    return !found || found.term.kind === 'role';
  };
  const cues = isCaptions(text) ? captionsIn(text, isName) : stampedIn(text, isName);
  const whole: NoteReading = {
    heard: { text, tokens: [], repairs: [] },
    quantities: [],
    notQuantities: [],
    times: [],
    terms: [],
    clauses: [],
    facts: [],
  };
  let group = 0;
  let area: { name: string; until: number } | null = null;
  for (const passage of passagesOf(cues)) {
    const reading = read(passage.text, options);
    const facts = worthKeeping(reading);
    const carried: string | null = area && passage.at - area.until <= AREA_HOLDS ? area.name : null;
    const named = reading.clauses.findLast((c) => c.area)?.area;
    if (facts.length && (named ?? carried)) area = { name: (named ?? carried)!, until: passage.until };
    const here = placed(text, passage, { ...reading, facts }, { from: whole.heard.tokens.length, until: 0, group });
    group = here.quantities.reduce((next, q) => Math.max(next, (q.group?.id ?? -1) + 1), group);
    append(whole.heard.tokens, here.heard.tokens);
    append(whole.heard.repairs, here.heard.repairs);
    append(whole.quantities, here.quantities);
    append(whole.notQuantities, here.notQuantities);
    append(whole.times, here.times);
    append(whole.terms, here.terms);
    append(
      whole.clauses,
      here.clauses.map((c) => ({ ...c, area: c.area ?? carried })),
    );
    append(
      whole.facts,
      here.facts.map((f) => ({ ...f, area: f.area ?? carried })),
    );
  }
  return { ...whole, facts: merged(whole.facts) };
}

// Spreading a whole file's tokens into `push` would overrun the stack.
function append<T>(to: T[], more: readonly T[]): void {
  for (const one of more) to.push(one);
}
