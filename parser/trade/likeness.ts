import { remembered } from '../remembered.ts';

/** How alike two wordings are: small words out, endings off, the trade's double names to one. Scores 0 to 1. */

const SMALL = new Set(
  'the a an of on in at to for from with and or but is are was were be it that this those these there here my our his her their we i you he she they them us some any all each per about around over under up down off out new old more just still also then now again back both get got has have had been install good into behind by side'.split(
    ' ',
  ),
);

/** Words of the trade that mean one thing; the right-hand word stands for both. Common practice, no source. */
const SAME: ReadonlyMap<string, string> = new Map(
  Object.entries({
    receptacle: 'outlet',
    recep: 'outlet',
    plug: 'outlet',
    socket: 'outlet',
    sheetrock: 'drywall',
    plasterboard: 'drywall',
    rock: 'drywall',
    ply: 'plywood',
    skirting: 'baseboard',
    base: 'baseboard',
    swap: 'replace',
    change: 'replace',
    exchange: 'replace',
    switch: 'switch',
    fix: 'repair',
    mend: 'repair',
    gfi: 'gfci',
    tap: 'faucet',
    adhesive: 'glue',
    caulking: 'caulk',
    sealant: 'caulk',
    bath: 'bathroom',
    sand: 'sand',
    paint: 'paint',
    repaint: 'paint',
    mudd: 'mud',
    joint: 'mud',
    shut: 'shutoff',
    stop: 'shutoff',
    broke: 'break',
    broken: 'break',
    busted: 'break',
    crack: 'crack',
    leak: 'leak',
    drip: 'leak',
    weep: 'leak',
    finish: 'finish',
    architrave: 'casing',
    countertop: 'counter',
    worktop: 'counter',
    wc: 'toilet',
    commode: 'toilet',
    loo: 'toilet',
    lvp: 'plank',
    plumb: 'plumber',
    timber: 'lumber',
    madera: 'lumber',
    clavo: 'nail',
    orde: 'order',
    lay: 'lay',
    set: 'lay',
    put: 'lay',
    hose: 'hose',
    shelve: 'shelf',
    shelving: 'shelf',
    punky: 'rot',
    spongy: 'rot',
    soft: 'rot',
    rotted: 'rot',
    rotten: 'rot',
  }),
);

/** A word without its ending. */
function bare(word: string): string {
  let w = word;
  if (w.length > 5 && w.endsWith('ing')) w = w.slice(0, -3);
  else if (w.length > 4 && w.endsWith('ied')) w = `${w.slice(0, -3)}y`;
  else if (w.length > 4 && w.endsWith('ed')) w = w.slice(0, -2);
  else if (w.length > 4 && /(?:ches|shes|xes|sses)$/.test(w)) w = w.slice(0, -2);
  else if (w.length > 3 && w.endsWith('s') && !/(?:ss|us)$/.test(w)) w = w.slice(0, -1);
  if (w.length > 3 && /([^ls])\1$/.test(w)) w = w.slice(0, -1);
  if (w.length > 3 && w.endsWith('e')) w = w.slice(0, -1);
  return w;
}

const MOST_KNOWN = 50_000;

/** A word and its double names come out alike: `swapped`, `replaces` and `change` are one. */
export const stem = remembered((word) => {
  const whole = word.toLowerCase().replace(/['’]s?$/, '');
  const cut = bare(whole);
  return bare(SAME.get(whole) ?? SAME.get(cut) ?? SAME.get(`${cut}e`) ?? cut);
}, MOST_KNOWN);

/** `keyWords` of a text met before, without the work; the set is shared and must not be changed. */
export const wordsOf: (text: string) => ReadonlySet<string> = remembered(keyWords, MOST_KNOWN);

/** A shutoff is a valve: said or not, it is the same thing. */
export const shortName = (text: string): string => text.replace(/\b(shut-?off|stop) valve(?=s?\b)/gi, '$1');

/** The words that carry the meaning, stemmed, each once. */
export function keyWords(text: string): Set<string> {
  return new Set(
    (
      shortName(text)
        .toLowerCase()
        .match(/[a-z0-9][a-z0-9'’/-]*/g) ?? []
    )
      .flatMap((w) => w.split(/[-/]/))
      .filter((w) => w && !SMALL.has(w))
      .map(stem),
  );
}

/** Shared share of the smaller set of words. */
export function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (!a.size || !b.size) return 0;
  let shared = 0;
  for (const word of a) if (b.has(word)) shared++;
  return shared / Math.min(a.size, b.size);
}

/** True where two areas are the same room, or one was not said. */
export function sameArea(a: string | null, b: string | null): boolean {
  if (!a || !b || a === b) return true;
  return likeness(wordsOf(a), wordsOf(b)) >= 0.99;
}
