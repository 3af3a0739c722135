import type { Fact } from '../types.ts';
import type { Talk } from './talk.ts';

const SITE = new Set(['material', 'part', 'fixture', 'surface', 'tool', 'defect', 'finish', 'task', 'work']);
const PLACED = new Set([...SITE, 'area', 'role']);

/**
 * Takes out what only small talk gave. A note that never names a thing or a work of the trade is about lunch, the game or
 * the weather: of it stand only facts whose own words name somebody of the site, a room, or a work ("call the plumber", "paving friday").
 */
export function withoutSmallTalk(talk: Talk, facts: readonly Fact[]): Fact[] {
  const { terms, quantities } = talk.reading;
  const ofSite =
    terms.some((t) => SITE.has(t.term.kind)) || quantities.some((q) => q.unitKind && q.unitKind !== 'time');
  if (ofSite) return [...facts];
  return facts.filter(
    (fact) =>
      !/^(?:followUp|done|problem)$/.test(fact.kind) ||
      ('who' in fact && fact.who !== null) ||
      talk.chunks.some((c) => c.term && PLACED.has(c.term.kind) && c.start < fact.end && c.end > fact.start) ||
      worksIn(talk, fact),
  );
}

const worksIn = (talk: Talk, fact: Fact): boolean =>
  talk.frames.some((f) => f.chunks.some((c) => c.verb?.use === 'work' && c.start >= fact.start && c.end <= fact.end));
