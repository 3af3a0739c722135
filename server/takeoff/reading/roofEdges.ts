import { feet, feetText } from './lengths.ts';
import { figureAt, type Said, saying } from './said.ts';
import type { Extent, Shape } from './shapes.ts';

/** "24 ft along the eave", "14-6 up the rake", "ridge is 24 ft". */
const LONG = saying(
  '<L> (?:long |(?:along|at|on|up|down) )?(?:the |each |every )?(eave|rake|ridge|hip|valley)s?\\b|\\b(eave|rake|ridge|hip|valley)s?(?: (?:is|are|runs?|at|each)|:)* <L>(?! (?:pieces|sticks|lengths|cap))',
  'g',
);
/** "Both eaves and all four rakes". */
const COUNTED = saying('\\b(?:(both)|all <N>|<N>) (eave|rake|ridge|hip|valley)s\\b', 'g');

/** Edges of a roof that goods run along, each as often as it was counted, by the lengths told of them. */
export function roofEdgesIn(said: Said, used: Set<number>, out: Extent): void {
  const counted = [...said.words.matchAll(COUNTED)];
  const lengths = new Map([...said.words.matchAll(LONG)].map((m) => [m[2] ?? m[3]!, Number(m[1] ?? m[4])]));
  if (counted.length === 0 && ALL_ROUND.test(said.words)) allRound(said, lengths, used, out);
  if (counted.length === 0) return;
  for (const [, both, all, some, edge] of counted) {
    const id = lengths.get(edge!);
    const length = id === undefined ? null : feet(said, said.figures[id]!, null);
    if (id === undefined || !length) {
      out.doubt = `don't know how long the ${edge}s are`;
      continue;
    }
    const count = both ? 2 : figureAt(said, all ?? some).value.valueOf();
    used.add(id);
    if (!both) used.add(Number(all ?? some));
    out.shapes.push({
      kind: 'run',
      sides: [length],
      amount: null,
      count,
      working: `${count} x ${feetText(length)}`,
    });
  }
}

/** "All the way round, eaves and rakes". */
const ALL_ROUND = /\b(?:eaves and (?:the )?rakes|rakes and (?:the )?eaves)\b/;
const BOTH_SLOPES = /\b(?:both|each|two|either) (?:sides?|slopes?|pitch(?:es)?)\b/;
const UP_SLOPE = saying(
  '<L> (?:(?:up|down|along)(?: the)? (?:slope|pitch|roof)|rafters?)|\\b(?:slopes?|rafters?)(?: (?:is|are|runs?|each))* <L>',
);

/** A roof of two slopes has two eaves, and a rake at each end of each slope; of one slope, an eave and two rakes. */
function allRound(said: Said, lengths: ReadonlyMap<string, number>, used: Set<number>, out: Extent): void {
  const slope = UP_SLOPE.exec(said.words)?.slice(1).find(Boolean);
  const ids = [lengths.get('eave'), lengths.get('rake') ?? (slope === undefined ? undefined : Number(slope))];
  const [eave, rake] = ids.map((id) => (id === undefined ? null : feet(said, said.figures[id]!, null)));
  if (!eave || !rake) {
    out.doubt = `don't know how long the ${eave ? 'rakes' : 'eaves'} are`;
    return;
  }
  const slopes = BOTH_SLOPES.test(said.words) ? 2 : 1;
  for (const id of ids) used.add(id!);
  for (const [length, count] of [
    [eave, slopes],
    [rake, 2 * slopes],
  ] as const)
    out.shapes.push({ kind: 'run', sides: [length], amount: null, count, working: `${count} x ${feetText(length)}` });
}

/** Goods that run along one kind of edge only. */
const ALONG: readonly (readonly [RegExp, string])[] = [
  [/\bridge (?:cap|vent|tile|board)/, 'ridge'],
  [/\bvalley/, 'valley'],
  [/\bhip (?:cap|tile|board)/, 'hip'],
];

/** "Ridge is 26 foot, a bundle of cap does twenty": the edge that the goods run along, whatever else the note measures. */
export function edgeFor(said: Said, item: string): Shape | null {
  const edge = ALONG.find(([named]) => named.test(item))?.[1];
  const m = edge && [...said.words.matchAll(LONG)].find((found) => (found[2] ?? found[3]) === edge);
  const length = m ? feet(said, figureAt(said, m[1] ?? m[4]), null) : null;
  return length && { kind: 'run', sides: [length], amount: null, count: 1, working: feetText(length) };
}

/** "Ridge is 28 foot, both slopes, sixteen foot rafters": the roof by its ridge or eave and how far it is up. */
export function roofIn(said: Said, used: Set<number>, out: Extent): void {
  const slope = UP_SLOPE.exec(said.words)?.slice(1).find(Boolean);
  const long = [...said.words.matchAll(LONG)].find((m) => /^(?:ridge|eave)$/.test(m[2] ?? m[3]!));
  const ids = [long?.[1] ?? long?.[4], slope];
  if (ids.some((id) => id === undefined || used.has(Number(id)))) return;
  const [a, b] = ids.map((id) => feet(said, figureAt(said, id), null));
  if (!a || !b) return;
  const count = BOTH_SLOPES.test(said.words) ? 2 : 1;
  for (const id of ids) used.add(Number(id));
  const times = count > 1 ? `${count} x ` : '';
  out.shapes.push({
    kind: 'rectangle',
    sides: [a, b],
    amount: null,
    count,
    working: `${times}${feetText(a)} x ${feetText(b)}`,
  });
}
