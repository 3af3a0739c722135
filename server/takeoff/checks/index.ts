import { remembered } from '../reading/remembered.ts';
import type { Said } from '../reading/said.ts';
import type { Computed } from '../types.ts';
import { anchors } from './heard/anchors.ts';
import { boxes, breakers, receptacles } from './heard/electrical.ts';
import { showersAndSinks, toilets } from './heard/fixtures.ts';
import { framing, parts } from './heard/framing.ts';
import { doors, egress } from './heard/openings.ts';
import { drains, dryers, flanges, trapArms, water } from './heard/plumbing.ts';
import type { Reader } from './heard/reader.ts';
import { guards, stairs } from './heard/stairs.ts';
import { tiles } from './heard/tile.ts';
import type { Verdict } from './verdict.ts';

/** These look at one note alone. */
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
  guards,
  stairs,
  egress,
  doors,
  tiles,
];

const known = new WeakMap<Said['figures'], readonly Verdict[]>();

/** A note's own verdicts; the same reading gives the same ones, so they are reckoned once. */
function ownVerdicts(said: Said): readonly Verdict[] {
  const before = known.get(said.figures);
  if (before) return before;
  const verdicts = ALONE.flatMap((reader) => reader(said, []));
  known.set(said.figures, verdicts);
  return verdicts;
}

/** Fit checks that the notes give enough for, each against its limit; the latest of a kind in an area stands. */
export function checksIn(notes: readonly Said[]): Computed['checks'] {
  const standing = new Map<string, Computed['checks'][number]>();
  const keep = (said: Said, verdicts: readonly Verdict[]) => {
    for (const verdict of verdicts)
      standing.set(`${verdict.of}/${said.area ?? ''}`, { ...verdict, noteId: said.noteId, area: said.area });
  };
  // A flange's height is told in pieces, over several notes.
  const flanged = notes.some(({ words }) => namesFlange(words));
  const ofArea = new Map<string | null, Said[]>();
  for (const said of notes) {
    keep(said, ownVerdicts(said));
    if (!flanged) continue;
    const before = ofArea.get(said.area) ?? [];
    keep(said, flanges(said, before));
    before.push(said);
    ofArea.set(said.area, before);
  }
  return [...standing.values()];
}

const namesFlange = remembered((words) => /\bflange\b/.test(words));
