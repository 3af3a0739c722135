import { readOnce } from '../reading/readOnce.ts';
import type { Said } from '../reading/said.ts';
import type { Computed } from '../types.ts';
import { anchors } from './heard/anchors.ts';
import { decking } from './heard/decking.ts';
import { boxes, breakers, receptacles } from './heard/electrical.ts';
import { showersAndSinks, toilets } from './heard/fixtures.ts';
import { flanges } from './heard/flange.ts';
import { framing, parts } from './heard/framing.ts';
import { moistures, woodFloors } from './heard/moisture.ts';
import { doors, egress } from './heard/openings.ts';
import { drains, dryers, trapArms, water } from './heard/plumbing.ts';
import type { Reader } from './heard/reader.ts';
import { guards, stairs } from './heard/stairs.ts';
import { tiles } from './heard/tile.ts';
import type { Verdict } from './verdict.ts';

/** These look at one note alone, and its area. */
const ALONE: readonly Reader[] = [
  boxes,
  breakers,
  receptacles,
  toilets,
  showersAndSinks,
  drains,
  trapArms,
  water,
  dryers,
  framing,
  parts,
  anchors,
  decking,
  guards,
  stairs,
  egress,
  doors,
  tiles,
];

/** These take the notes of the same area before it along, those that speak of the matter. */
const BEFORE: readonly { reader: Reader; speaks: (words: string) => boolean }[] = [
  {
    reader: flanges,
    speaks: (words) =>
      /\b(?:flange|(?:closet|toilet|johnny) bolts?|subfloor|build ?up|built up|floor build)\b/.test(words),
  },
  {
    reader: moistures,
    speaks: (words) =>
      /\b(?:under|below|less than|over) \{|\{P|\b(?:plates?|studs?|subfloor|framing|slab|joists?|sheathing|meter|moisture)\b[^.]{0,24}\{/.test(
        words,
      ),
  },
  {
    reader: woodFloors,
    speaks: (words) => /\bsub ?floor\b|\b(?:strips?|planks?|flooring|oak|hardwood)\b/.test(words),
  },
];

/** Places of those of `BEFORE` that a note speaks to. */
const spokenTo = readOnce(({ words }) => BEFORE.flatMap(({ speaks }, k) => (speaks(words) ? [k] : [])));

const known = readOnce(() => new Map<string | null, readonly Verdict[]>());

/** A note's own verdicts; the same words in the same area give the same ones, so they are reckoned once. */
function ownVerdicts(said: Said): readonly Verdict[] {
  const byArea = known(said);
  const before = byArea.get(said.area);
  if (before) return before;
  const verdicts = ALONE.flatMap((reader) => reader(said, []));
  byArea.set(said.area, verdicts);
  return verdicts;
}

/** Fit checks that the notes give enough for, each against its limit; the latest of a kind in an area stands. */
export function checksIn(notes: readonly Said[]): Computed['checks'] {
  const standing = new Map<string, Computed['checks'][number]>();
  const keep = (said: Said, verdicts: readonly Verdict[]) => {
    for (const verdict of verdicts)
      standing.set(`${verdict.of}/${said.area ?? ''}`, { ...verdict, noteId: said.noteId, area: said.area });
  };
  const before = BEFORE.map(() => new Map<string | null, Said[]>());
  for (const said of notes) {
    keep(said, ownVerdicts(said));
    for (const k of spokenTo(said)) {
      const ofArea = before[k]!.get(said.area) ?? [];
      keep(said, BEFORE[k]!.reader(said, ofArea));
      ofArea.push(said);
      before[k]!.set(said.area, ofArea);
    }
  }
  return [...standing.values()];
}
