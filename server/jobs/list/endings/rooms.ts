import { wordsOf } from '../../../../parser/trade/likeness.ts';

/** Key words of a job's rooms; those of names of several words ("mud room") are never the name of a thing. */
export interface Rooms {
  words: ReadonlySet<string>;
  ofSeveral: ReadonlySet<string>;
}

const known = new WeakMap<readonly string[], Rooms>();

/** The same list of rooms is looked at once. */
export function roomsOf(areas: readonly string[]): Rooms {
  const rooms = known.get(areas) ?? {
    words: wordsOf(areas.join(' ')),
    ofSeveral: wordsOf(areas.filter((area) => area.includes(' ')).join(' ')),
  };
  known.set(areas, rooms);
  return rooms;
}
