import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { remembered } from '../reading/remembered.ts';
import type { Figure, Said } from '../reading/said.ts';
import { saying } from '../reading/said.ts';
import type { Computed } from '../types.ts';
import { boxFill, type Cable } from './boxFill.ts';
import { breaker } from './breaker.ts';
import { drainSlope } from './drain.ts';
import { dryerVent } from './dryerVent.ts';
import { flangeHeight } from './flange.ts';
import { balusterGap, guardHeight } from './guard.ts';
import { risers, treads } from './stairs.ts';
import type { Verdict } from './verdict.ts';
import { fahrenheit, hotWater, staticPressure } from './water.ts';

/** Reads one kind of check from a note, with the notes of the same area before it. */
type Reader = (said: Said, before: readonly Said[]) => Verdict[];

const COUNTS: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };

/** A figure in inches; a bare number is taken as inches where the words before it measure. */
function inchesOf(figure: Figure | undefined): Fraction | null {
  if (!figure) return null;
  return figure.unit === null ? figure.value : convert(figure.value, figure.unit, 'in');
}

const matched = (said: Said, pattern: RegExp): Fraction | null => {
  const match = pattern.exec(said.words);
  return match ? inchesOf(said.figures[Number(match[1])]) : null;
};

const HEIGHT = saying('\\b(?:rail|railing|guard|guardrail|handrail)\\b[^.]{0,30}?<LN>');
const DROP = saying(
  "\\b(?:deck|porch|landing|balcony|platform|stoop|floor)(?:'s| is| sits)?[^.]{0,20}?<LN> (?:off|above|up|over|from)\\b",
);
const GAP = saying('\\b(?:balusters?|pickets?|spindles?)\\b[^.]{0,30}?<LN> (?:clear|apart|between|gap|gaps)');

const guards: Reader = (said) => {
  const height = matched(said, HEIGHT);
  const gap = matched(said, GAP);
  const out: Verdict[] = [];
  if (height && height.compare(20) > 0 && height.compare(60) < 0)
    out.push(guardHeight({ drop: matched(said, DROP), height, on: 'floor' }));
  if (gap && gap.compare(12) < 0) out.push(balusterGap(gap, 'floor'));
  return out;
};

const CABLES = saying('(?:<N>|\\b(a|an|one|two|three|four|five|six)) (14|12|10)[-/ ](2|3)\\b');
const DEVICES = saying(
  '(?:<N> |\\b(a|an|one|two|three) )?(?:gfcis?|receptacles?|outlets?|switch(?:es)?|dimmers?|timers?)\\b',
  'g',
);

const boxes: Reader = (said) => {
  const { words, figures } = said;
  if (!/\bbox\b/.test(words)) return [];
  const cables: Cable[] = [];
  for (const match of words.matchAll(new RegExp(CABLES.source, 'g'))) {
    const count = match[1] !== undefined ? figures[Number(match[1])]!.value.valueOf() : COUNTS[match[2]!]!;
    // Cable of this kind carries a bare ground besides what its name counts.
    cables.push({ count, gauge: Number(match[3]), conductors: Number(match[4]), ground: true });
  }
  const volume = figures.find((f) => f.unit === 'cu in')?.value ?? null;
  const asked = /\b(?:fill|fit|fits|enough room|gonna work|going to work|too small|big enough|ok\b|okay)\b|\?/.test(
    words,
  );
  if (!cables.length || (!volume && !asked)) return [];
  const devices = [...words.matchAll(DEVICES)].flatMap((match) => {
    const n = match[1] !== undefined ? figures[Number(match[1])]!.value.valueOf() : (COUNTS[match[2] ?? 'a'] ?? 1);
    return Array.from({ length: Math.min(n, 6) }, () => ({ gauge: null }));
  });
  const clamps = /\bno (?:\w+ )?clamps?\b|\bplastic box\b/.test(words)
    ? false
    : /\bclamps?\b/.test(words)
      ? true
      : null;
  return [boxFill({ cables, devices, clamps, volume })];
};

const BELOW = saying('<LN> (?:below|under|lower than) (?:the )?(?:finished |finish )?(?:floor|tile)');
const ABOVE = saying('<LN> (?:above|over|proud of|higher than) (?:the )?(?:finished |finish )?(?:floor|tile)');
const ON_SUBFLOOR = saying('<LN> (?:above|over|proud of) (?:the )?(?:bare )?subfloor');

const flanges: Reader = (said, before) => {
  const notes = [...before, said];
  const direct = matched(said, BELOW);
  if (direct) return [flangeHeight(direct)];
  const above = matched(said, ABOVE);
  if (above) return [flangeHeight(above.neg())];
  const sits = notes
    .map((n) =>
      /\bflush with (?:the )?(?:bare )?subfloor\b/.test(n.words) ? new Fraction(0) : matched(n, ON_SUBFLOOR),
    )
    .find((v) => v !== null);
  const build = notes.find((n) => /\b(?:build ?up|built up|floor build)\b/.test(n.words));
  if (sits === undefined || sits === null || !build) return [];
  const layers = build.figures.filter((f) => f.unit === 'in').map((f) => f.value);
  if (!layers.length) return [flangeHeight(null)];
  const floor = layers.reduce((sum, layer) => sum.add(layer), new Fraction(0));
  const working = `${layers.map((l) => l.toFraction(true)).join(' + ')} = ${floor.toFraction(true)} in of floor over the subfloor, flange ${sits.toFraction(true)} in above it`;
  return [flangeHeight(floor.sub(sits), working)];
};

const RISE = saying(
  '<LN> (?:inch )?(?:rise|riser|risers|high risers)\\b|\\b(?:rise|riser|risers)\\b[^.{]{0,20}<LN>',
  'g',
);
const TREAD = saying('<LN> (?:inch )?(?:tread|treads|run)\\b|\\btreads?\\b[^.{]{0,20}<LN>', 'g');

const stairs: Reader = (said) => {
  if (!/\b(?:stairs?|steps?|risers?|treads?)\b/.test(said.words)) return [];
  const all = (pattern: RegExp) =>
    [...said.words.matchAll(pattern)]
      .flatMap((m) => inchesOf(said.figures[Number(m[1] ?? m[2])]) ?? [])
      .filter((v) => v.compare(3) > 0 && v.compare(16) < 0);
  return [...risers(all(RISE)), ...treads(all(TREAD))];
};

const water: Reader = (said) => {
  const out: Verdict[] = [];
  const psi = said.figures.find((f) => f.unit === 'psi');
  if (
    psi &&
    /\b(?:water pressure|hose bib|static|house pressure|street pressure|pressure at the|incoming)\b/.test(said.words) &&
    !/\b(?:test|tested|air|gas|held)\b/.test(said.words)
  )
    out.push(staticPressure(psi.value));
  const hot = said.figures.find(
    (f) => f.kind === 'temperature' && (f.unit === 'F' || f.unit === 'C' || f.unit === 'deg'),
  );
  if (hot && /\b(?:tub|shower|tap|faucet|hot water|sink)\b/.test(said.words) && !/\bheater\b/.test(said.words))
    out.push(hotWater(hot.unit === 'C' ? fahrenheit(hot.value) : hot.value));
  return out;
};

const ELBOWS = saying('(?:<N>|\\b(a|one|two|three|four|five)) (?:elbows?|nineties|90s|bends?)');

const dryers: Reader = (said) => {
  if (!/\bdryer\b/.test(said.words) || !/\b(?:vent|duct|run)\b/.test(said.words)) return [];
  const run = said.figures.find((f) => f.unit === 'ft');
  if (!run) return [];
  const bends = ELBOWS.exec(said.words);
  const count = bends
    ? bends[1] !== undefined
      ? said.figures[Number(bends[1])]!.value.valueOf()
      : COUNTS[bends[2]!]!
    : /\bstraight\b/.test(said.words)
      ? 0
      : null;
  return [dryerVent(run.value, count, 0)];
};

const RUN = saying(
  '(?:<LN> )?(?:drain|waste|sewer)\\b[^.]{0,30}?<L>[^.{]{0,30}?\\b(?:drops?|falls?|fall of|drop of)\\b[^.{]{0,12}<LN>',
);

const drains: Reader = (said) => {
  const match = RUN.exec(said.words);
  const slope = said.figures.find((f) => f.unit === 'in/ft');
  if (match) {
    const run = inchesOf(said.figures[Number(match[2])]);
    return [
      drainSlope({
        size: match[1] === undefined ? null : inchesOf(said.figures[Number(match[1])]),
        run: run?.div(12) ?? null,
        fall: inchesOf(said.figures[Number(match[3])]),
      }),
    ];
  }
  return slope &&
    /\b(?:drain|waste|sewer|trap arm)\b/.test(said.words) &&
    !/\b(?:shower pan|pan|patio|slab|apron)\b/.test(said.words)
    ? [drainSlope({ size: null, run: null, fall: null, slope: slope.value })]
    : [];
};

const breakers: Reader = (said) => {
  const amps = said.figures.find((f) => f.unit === 'A');
  const gauge =
    said.figures.find((f) => f.kind === 'gauge')?.value.valueOf() ??
    Number(/\b(14|12|10|8|6)[-/](?:2|3)\b/.exec(said.words)?.[1] ?? Number.NaN);
  if (!amps || !/\bbreaker\b/.test(said.words) || Number.isNaN(gauge)) return [];
  return [
    breaker({
      gauge,
      breaker: amps.value.valueOf(),
      metal: /\balumin(?:i)?um\b/.test(said.words) ? 'aluminum' : 'copper',
    }),
  ];
};

/** These look at one note alone. */
const ALONE: readonly Reader[] = [boxes, breakers, guards, stairs, water, dryers, drains];

/** Words without which no reader finds anything. */
const speaks = remembered((words) =>
  /\b(?:box|breaker|rail|railing|guard|guardrail|handrail|balusters?|pickets?|spindles?|stairs?|steps?|risers?|treads?|pressure|hose bib|static|incoming|tub|shower|tap|faucet|hot water|sink|dryer|drain|waste|sewer|trap arm)\b/.test(
    words,
  ),
);

const known = new WeakMap<Said['figures'], readonly Verdict[]>();

/** A note's own verdicts; the same reading gives the same ones, so they are reckoned once. */
function ownVerdicts(said: Said): readonly Verdict[] {
  const before = known.get(said.figures);
  if (before) return before;
  const verdicts = speaks(said.words) ? ALONE.flatMap((reader) => reader(said, [])) : [];
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
  const flanged = notes.some(({ words }) => namesFlange(words));
  const ofArea = new Map<string | null, Said[]>();
  for (const said of notes) {
    keep(said, ownVerdicts(said));
    if (!flanged) continue;
    const before = ofArea.get(said.area) ?? [];
    if (namesFlange(said.words)) keep(said, flanges(said, before));
    before.push(said);
    ofArea.set(said.area, before);
  }
  return [...standing.values()];
}

const namesFlange = remembered((words) => /\bflange\b/.test(words));
