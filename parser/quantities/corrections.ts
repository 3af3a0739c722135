import { takeBackAt } from '../hearing/takeback.ts';
import type { Token } from '../types.ts';
import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { wordSet } from './words.ts';

/** As many words may stand between a number and the words that take it back: "six cans of the grey foam, no wait, five". */
const REACH = 10;
/** "Two cans, well three": "well" takes back only what was said just now. */
const NEAR = 5;
/** Words between the taking-back and the new number that say nothing of their own. */
const PADDING = wordSet(
  "that it get like let's lets do better going go with about make more to be i mean it's its that's is need a an the of at say call , . …",
);
/** A new thought between them: what follows is no correction. */
const JOINTS = wordSet('and but then also plus so');

/** "A dozen anchors, make it two dozen"; "I make it fourteen" measures. */
const madeIt = (all: readonly Token[], k: number) =>
  all[k]!.word === 'make' && all[k + 1]?.word === 'it' && /^(?:,|[a-z]+s|\d+)$/.test(all[k - 1]?.word ?? '')
    ? ({ until: k + 2, scope: 'number' } as const)
    : null;

/** "Six cans of foam, no wait, five": the later number stands, in the earlier one's place and with its unit. */
export function correct(line: Line, all: readonly Token[], drafts: readonly Draft[]): Draft[] {
  const out: Draft[] = [];
  for (let i = 0; i < drafts.length; i++) {
    const next = drafts[i]!;
    const back = out.at(-1);
    const marker = back ? markerBetween(line, all, back, next) : null;
    if (!back || marker === null || !sameSort(back, next) || isOfGoods(line, back, next)) {
      out.push(next);
      continue;
    }
    const sizes = tiedTo(drafts, i, next).length;
    const taken = sizes > 1 ? out.slice(-sizes) : [back];
    const whole = taken.every((d) => d.group?.id === back.group?.id) ? taken : [back];
    out.length -= whole.length;
    if (whole.length === 1 && back.group && !next.group) next.group = back.group;
    if (next.unitFrom !== 'said' && back.unitFrom === 'said') {
      next.unit = back.unit;
      next.unitFrom = 'shared';
    }
    const first = whole[0]!;
    next.instead = [
      ...whole.flatMap((d) => d.instead ?? []),
      { from: line.place(first.from), until: line.place(back.until - 1) + 1 },
      { from: marker, until: line.place(next.from) },
    ];
    next.rule += '+taken-back';
    out.push(next);
  }
  return out;
}

const tiedTo = (drafts: readonly Draft[], i: number, first: Draft) =>
  first.group ? drafts.slice(i, i + 4).filter((d) => d.group?.id === first.group!.id) : [first];

const sameSort = (a: Draft, b: Draft) =>
  a.unit === null || b.unit === null || a.unit.kind === b.unit.kind || b.unitFrom === 'implied';

/** "An inch and a half, no, get two": a count of goods takes back no size. */
const isOfGoods = (line: Line, back: Draft, next: Draft) =>
  next.unit === null &&
  /^(?:get|need|want|order|buy|bring|grab)$/.test(line.word(next.from - 1)) &&
  back.unit !== null &&
  !/^(?:pack|count)$/.test(back.unit.kind);

/** Where in all the note's tokens the taking-back starts, its comma with it. */
function markerBetween(line: Line, all: readonly Token[], back: Draft, next: Draft): number | null {
  if (next.from - back.until > REACH || next.from < back.until) return null;
  const end = line.place(next.from);
  for (let k = line.place(back.until - 1) + 1; k < end; k++) {
    if (JOINTS.has(all[k]!.word) || all[k]!.kind === 'break') return null;
    // "Fourteen six, call it sixteen": rounded up to be safe; both were said.
    if (all[k]!.word === 'call') continue;
    const marker = takeBackAt(all, k) ?? madeIt(all, k);
    if (all[k]!.word === 'well' && k > line.place(back.until - 1) + NEAR) return null;
    if (marker?.scope !== 'number' || marker.until > end) continue;
    if (all.slice(marker.until, end).every((t) => t.skip || PADDING.has(t.word)))
      return all[k - 1]!.text === ',' ? k - 1 : k;
  }
  return null;
}
