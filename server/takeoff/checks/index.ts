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

const READERS: readonly Reader[] = [
  boxes,
  breakers,
  receptacles,
  flanges,
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

/** Fit checks that the notes give enough for, each against its limit; the latest of a kind in an area stands. */
export function checksIn(notes: readonly Said[]): Computed['checks'] {
  const standing = new Map<string, Computed['checks'][number]>();
  const ofArea = new Map<string | null, Said[]>();
  for (const said of notes) {
    const before = ofArea.get(said.area) ?? [];
    for (const reader of READERS) {
      for (const verdict of reader(said, before))
        standing.set(`${verdict.of}/${said.area ?? ''}`, { ...verdict, noteId: said.noteId, area: said.area });
    }
    before.push(said);
    ofArea.set(said.area, before);
  }
  return [...standing.values()];
}
