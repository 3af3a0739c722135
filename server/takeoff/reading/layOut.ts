/** A job's notes laid out in their order, each in its area. */
import { remembered } from '../../../parser/remembered.ts';
import type { NoteFacts, SiteFacts } from '../types.ts';
import { inMetres } from './inMetres.ts';
import { readOnce } from './readOnce.ts';
import { readingOf, type Said } from './said.ts';

/** The area that words name; null where they name none. */
type NamedIn = (text: string) => string | null;

/** Which area a note names, longest name first; a short form of a name counts ("laundry" for "laundry room"). */
function areaFinder(site: SiteFacts): NamedIn {
  const places = [...site.areas]
    .sort((a, b) => b.length - a.length)
    .map((name) => ({ name, whole: name.toLowerCase(), short: shortName(name.toLowerCase(), site) }));
  return remembered((text) => {
    const said = text.toLowerCase();
    return places.find(({ whole, short }) => said.includes(whole) || short?.test(said))?.name ?? null;
  });
}

const finders = new WeakMap<SiteFacts['areas'], NamedIn>();

function shortName(area: string, site: SiteFacts): RegExp | null {
  const first = area.split(' ')[0]!;
  const alone = site.areas.filter((a) => a.toLowerCase().startsWith(first)).length === 1;
  return alone && first.length > 3 ? new RegExp(`\\b${first.replace(/[^a-z]/g, '')}\\b`) : null;
}

const laid = new WeakMap<NoteFacts, { said: Said; own: string | null; namedIn: NamedIn }>();

/** A note laid out, in the area that it names, else in the one carried to it. */
function laidOut(note: NoteFacts, carried: string | null, namedIn: NamedIn): Said {
  const before = laid.get(note);
  const known = before?.namedIn === namedIn ? before : null;
  const own = known ? known.own : (namedIn(note.text) ?? note.facts.find((f) => f.area)?.area ?? null);
  const area = own ?? carried;
  if (known && known.said.area === area) return known.said;
  const { noteId, saidAt, text, facts } = note;
  const said = { noteId, saidAt, text, facts, area, ...readingOf(text) };
  laid.set(note, { said, own, namedIn });
  return said;
}

/** In what a note tells the lengths whose unit was said with them. */
const lengthsIn = readOnce(({ figures }): 'metres' | 'others' | 'none' => {
  const lengths = figures.filter((f) => f.sure && f.kind === 'length');
  if (lengths.length === 0) return 'none';
  return lengths.some((f) => f.unit === 'm') ? 'metres' : 'others';
});

/** All notes laid out, the area carried from note to note until another is named. */
export function layOut(notes: readonly NoteFacts[], site: SiteFacts): Said[] {
  const namedIn = finders.get(site.areas) ?? areaFinder(site);
  finders.set(site.areas, namedIn);
  let area: string | null = site.areas.length === 1 ? site.areas[0]! : null;
  const metric = new Set<string | null>();
  return notes.map((note) => {
    const said = laidOut(note, area, namedIn);
    area = said.area;
    const lengths = lengthsIn(said);
    if (lengths === 'metres') metric.add(area);
    else if (lengths === 'none' && metric.size > 0 && metric.has(area)) return inMetres(said);
    return said;
  });
}
