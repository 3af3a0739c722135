import { hear } from '../../../parser/hearing/index.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { remembered } from '../../../parser/remembered.ts';
import { builtIn } from '../../../parser/trade/index.ts';
import { mentionsIn } from '../../../parser/trade/mentions.ts';
import type { Token } from '../../../parser/types.ts';
import type { NoteFacts, SiteFacts } from '../types.ts';
import { figuresIn } from './figures.ts';
import { inMetres } from './inMetres.ts';
import { noReadings, readOnce } from './readOnce.ts';
import { type Figure, letterOf, type Said } from './said.ts';
import { puttingRight } from './spoken.ts';
import { writtenOut } from './writtenOut.ts';

/** Shorthand of hurried typing. */
const SHORT: Readonly<Record<string, string>> = {
  n: 'and',
  '&': 'and',
  '+': 'and',
  '@': 'at',
  '×': 'x',
  ea: 'each',
  w: 'with',
  gnd: 'ground',
  thru: 'through',
  "'em": 'them',
  em: 'them',
  sez: 'says',
  pkg: 'pack',
  pkgs: 'packs',
  pk: 'pack',
  cvrs: 'covers',
  btwn: 'between',
  incl: 'including',
  rm: 'room',
  sht: 'sheet',
  shts: 'sheets',
  scrw: 'screw',
  scrws: 'screws',
  bx: 'box',
  ctn: 'carton',
  ctns: 'cartons',
  flr: 'floor',
  clg: 'ceiling',
};

type Reading = Pick<Said, 'words' | 'figures' | 'terms' | 'readings'>;

const readingOf = remembered(read);

function read(typed: string): Reading {
  const text = writtenOut(typed);
  const vocabulary = builtIn();
  const { tokens } = hear(text, vocabulary);
  const { quantities, notQuantities } = readQuantities(tokens, text);
  const pieces = figuresIn(text, quantities, notQuantities);
  const figures: Figure[] = [];
  let words = '';
  let next = 0;
  for (const token of tokens) {
    const piece = pieces[next];
    if (piece && token.end > piece.start && token.start < piece.end) {
      if (token.end < piece.end) continue;
      words += ` {${letterOf(piece.figure)}${figures.push(piece.figure) - 1}}`;
      if (endsSentence(text, piece.end)) words += '.';
      next++;
      continue;
    }
    words += wordOf(token, words);
  }
  words = words
    .replace(/\s+/g, ' ')
    .replace(/ with \/ ?/g, ' with ')
    .replace(/\b(\d{1,2}) (st|nd|rd|th)\b/g, '$1$2')
    .replace(/- ?by ?- ?(?=\{)/g, ' by ')
    .replace(/(\{[LN]\d+\}) with (?=(?:x|by) \{)/g, '$1 wide ')
    .replace(/(\{[LN]\d+\}) h\b/g, '$1 high')
    .replace(/(\{[LN]\d+\}) even\b/g, '$1')
    .replace(/(\{N\d+\})\/ (?=[a-z])/g, '$1 per ')
    .trim();
  return {
    words: puttingRight(words, figures),
    figures,
    terms: mentionsIn(tokens, text, vocabulary),
    readings: noReadings(),
  };
}

function wordOf(token: Token, before: string): string {
  if (token.skip) return '';
  if (token.kind === 'break') return ' . ';
  const word = SHORT[token.word] ?? token.word;
  const glued = !token.spaced && before !== '' && !/[a-z]/.test(token.text[0]!.toLowerCase());
  return glued && !/^[@&+×]$/.test(token.text) ? word : ` ${word}`;
}

/** "120 sq ft. Add ten": the unit took the full stop with it. "9 in. wide" goes on. */
const endsSentence = (text: string, end: number): boolean =>
  text[end - 1] === '.' &&
  !/^\s*(?:[,;:)\d"']|(?:x|by|wide|long|high|deep|tall|thick|across|on|o\.?c|of|and|or|to|in|at|from|apart|each|ea|a|per|bags|rolls|boxes|tubes|cans|tins|sheets|sticks|joint|gap|bead|notch|base|floor|walls?)\b)/i.test(
    text.slice(end),
  );

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
  const { words, figures, terms, readings } = readingOf(text);
  const said = { noteId, saidAt, text, facts, area, words, figures, terms, readings };
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
