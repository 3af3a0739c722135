import { remembered } from '../../../parser/remembered.ts';
import type { Fact } from '../../../parser/types.ts';
import { readOnce } from '../reading/readOnce.ts';
import type { Said } from '../reading/said.ts';
import type { Computed, SiteFacts } from '../types.ts';
import { builtIn } from './builtYear.ts';
import { DANGERS, type Danger } from './dangers/index.ts';
import { HAZARDS, type Hazard } from './hazards.ts';

type Caution = Computed['cautions'][number];

/** Words that only an old house has, where nobody said when it was built. */
const OLD =
  /\b(?:lead (?:based )?paint|lath|knob and tube|horsehair|coats of (?:old )?paint|balloon fram\w*|plaster and lath)\b/;
const DENIED = /\b(?:no|not|isn't|wasn't|without|never|negative for|free of)(?: \w+){0,2} $/;

/** Cautions that the job's own words call for, each once, with the notes that named the work. */
export function cautionsIn(notes: readonly Said[], site: SiteFacts): Caution[] {
  const naming = notes.filter((note) => namedIn(note).length > 0 && calledBy(note).length > 0);
  const byAge = naming.some((note) => calledBy(note).some((hazard) => hazard.before !== undefined));
  const built = byAge ? (site.builtYear ?? builtIn(notes)) : null;
  const calling = new Map<Hazard, string[]>();
  for (const note of naming)
    for (const hazard of calledBy(note)) {
      if (!oldEnough(hazard, built, note)) continue;
      const noteIds = calling.get(hazard) ?? [];
      noteIds.push(note.noteId);
      calling.set(hazard, noteIds);
    }
  return HAZARDS.flatMap((h) => {
    const noteIds = calling.get(h);
    return noteIds ? [{ hazard: h.hazard, text: h.text, source: h.source, noteIds }] : [];
  });
}

const known = new WeakMap<Said, readonly Hazard[]>();

/** Hazards that one note calls for, whatever the house's age; the same note calls for the same ones. */
function calledBy(note: Said): readonly Hazard[] {
  const called =
    known.get(note) ??
    namedIn(note).flatMap(({ hazard, places, danger }) =>
      danger || (hazard.stays && places.length) || places.some((at) => isOpen(note, at)) ? [hazard] : [],
    );
  known.set(note, called);
  return called;
}

type Place = readonly [start: number, end: number];

/** A hazard, where a text names its work, and whether it tells that its danger is there. */
interface Named {
  hazard: Hazard;
  places: Place[];
  danger: boolean;
}

const namedIn = readOnce(({ text }): Named[] => {
  const dangers = new Set(dangersIn(text).map(({ hazard }) => hazard));
  return HAZARDS.flatMap((hazard): Named[] => {
    const places = hazard.when ? placesOf(hazard.when, text) : [];
    const danger = dangers.has(hazard.hazard);
    return danger || places.length ? [{ hazard, places, danger }] : [];
  });
});

/** Where a text names something; what is denied ("no mold back there") is not named. */
function placesOf(pattern: RegExp, text: string): Place[] {
  const said = text.toLowerCase();
  if (!pattern.test(said)) return [];
  return [...said.matchAll(new RegExp(pattern.source, 'g'))]
    .filter((match) => !DENIED.test(before(said, match.index)))
    .map((match): Place => [match.index, match.index + match[0].length]);
}

/** The few words right before a place, which deny what stands there or put it in doubt. */
const before = (text: string, at: number): string => text.slice(Math.max(0, at - 60), at);

/** A danger that words tell to be there, and where they do. */
export interface DangerTold extends Danger {
  start: number;
  end: number;
}

/** Dangers told, in the order of `dangers/`; what only might be is not told. */
export const dangersIn = remembered((text): readonly DangerTold[] =>
  DANGERS.flatMap((danger) =>
    placesOf(danger.told, text)
      .filter(([start, end]) => !SUPPOSED.test(before(text, start).toLowerCase()) && !isFoundClean(text, start, end))
      .map(([start, end]) => ({ ...danger, start, end })),
  ),
);
const SUPPOSED = /\b(?:if|in case|unless|whether|once|until|till)(?: \w+){0,3} $/;

/** "Popcorn test came back neg": told in the same sentence. */
const isFoundClean = (text: string, start: number, end: number): boolean =>
  FOUND_CLEAN.test(text.slice(sentenceStart(text, start), sentenceEnd(text, end)).toLowerCase());
const FOUND_CLEAN = /\b(?:test(?:s|ed)?|lab|samples?|came back|results?)\b[^.]{0,24}\b(?:neg|negative|clean)\b/;

/** Do an item's own words name the work that a hazard is about, or its danger. */
export const concerns = (hazard: string, words: string): boolean =>
  HAZARDS.some((h) => h.hazard === hazard && h.when?.test(words.toLowerCase())) ||
  dangersIn(words).some((danger) => danger.hazard === hazard);

/** What a test has shown is there, however old the house. */
const oldEnough = (hazard: Hazard, built: number | null, { text }: Said): boolean =>
  hazard.before === undefined ||
  dangersIn(text).some((danger) => danger.hazard === hazard.hazard) ||
  (built === null ? OLD.test(text.toLowerCase()) : built < hazard.before);

/** Words told only as done, or only as goods, are no work to come; words that no reader took are, to be safe. */
function isOpen({ text, facts }: Said, [start, end]: Place): boolean {
  const over = facts.filter((f) => f.start < end && f.end > start);
  const told = over.length
    ? over
    : facts.filter((f) => f.start < sentenceEnd(text, end) && f.end > sentenceStart(text, start));
  if (!told.length && WELL.test(text.slice(end, sentenceEnd(text, end)).toLowerCase())) return false;
  return (
    told.some((f) => isToCome(f) || facts.some((g) => isToCome(g) && g.start >= f.end && g.start - f.end <= RUNS_ON)) ||
    !told.some((f) => (f.kind === 'done' && !isFinding(f, text)) || f.kind === 'material')
  );
}

/** "Dimmer works, all good". */
const WELL =
  /^(?:'s| is| are)?(?: \w+)? (?:works?|fine|good|ok|okay)(?: (?:now|again|fine|good|great))*(?=,|$)(?!.*\bbut\b)/;

/** "The joist is notched, that's gotta be sistered": the work to come follows on within so many characters. */
const RUNS_ON = 8;

/** "Get sistered" is still to be done, whatever it was read as. */
const STILL_TO_DO =
  /\b(?:gets?|needs?|gotta|got to|ha(?:s|ve) to|must|should|will) (?:be )?\w+(?:ed|en)\b|^(?:tmrw|tmw|tomorrow)\b/;

/** "Gluing up the pvc" is being done. */
const UNDER_WAY =
  /^(?!(?:during|nothing|everything|something|ceiling|flashing|siding|decking|plumbing|wiring|framing|railing)\b)[a-z-]+ing\b/i;

/** "14 gauge on a 20 amp breaker, found that at the panel": what was found is not thereby put right. */
const isFinding = (fact: Fact, text: string): boolean => /^,? ?found (?:that|it|this)\b/i.test(text.slice(fact.end));

const isToCome = (fact: Fact): boolean =>
  (fact.kind === 'done' && (STILL_TO_DO.test(fact.quote.toLowerCase()) || UNDER_WAY.test(fact.quote))) ||
  fact.kind === 'followUp' ||
  fact.kind === 'decision' ||
  (fact.kind === 'problem' && fact.state === 'open');

const sentenceStart = (text: string, at: number): number =>
  Math.max(...['. ', '\n', '; ', '! ', '? '].map((m) => text.lastIndexOf(m, at - 1))) + 1;

function sentenceEnd(text: string, at: number): number {
  const ends = ['. ', '\n', '; ', '! ', '? '].map((m) => text.indexOf(m, at)).filter((k) => k >= 0);
  return Math.min(text.length, ...ends);
}
