import type { Measurement, Quantity } from '../types.ts';
import { antecedent } from './antecedent.ts';
import { type Chunk, isGoods, isNounTerm, isPreposition } from './chunks.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { isPerson, isPointer, nounPhraseFrom, phrase, type Talk, thingIn } from './talk.ts';

const MEASURABLE = new Set([
  'length',
  'area',
  'temperature',
  'percent',
  'pressure',
  'voltage',
  'current',
  'power',
  'angle',
  'slope',
  'torque',
  'speed',
  'flow',
  'weight',
  'other',
]);
/** Units in which goods are sold, hardly ever a reading. */
const NEVER_MEASURED = /^(?:yd|ton|gal|qt|pt|kg|L|ml|oz|cu yd|penny|grit)$/;
const DIMENSIONS =
  /^(wide|width|tall|high|height|long|length|deep|depth|thick|thickness|across|diameter|apart|square|clear|gap|reveal|showing|exposure|short|shy|over|proud|low|off)$/;
const READS =
  /^(read|sit|be|come|hit|measure|stand|stick|show|run|want|need|average|draw|hold|spec|say|start|end|go|pull|get|put)$/;

/** Sizes, gaps, levels and readings that somebody took or must hold to; `taken` are the goods' own counts and sizes. */
export function readMeasurements(talk: Talk, taken: ReadonlySet<Quantity>): Measurement[] {
  return talk.frames.flatMap((frame, at) => {
    const out: Measurement[] = [];
    frame.chunks.forEach((chunk, k) => {
      const q = chunk.quantity;
      if (!q || taken.has(q) || !isMeasurement(frame, k, q)) return;
      out.push(measurementOf(talk, frame, at, k, q));
    });
    return out;
  });
}

function isMeasurement(frame: Frame, k: number, q: Quantity): boolean {
  const next = frame.chunks[k + 1];
  if (q.unitKind && MEASURABLE.has(q.unitKind) && q.unitFrom !== 'none') {
    if (q.unit === 'grit') return false;
    if (NEVER_MEASURED.test(q.unit ?? '') || q.per !== undefined) return false;
    if (q.unitKind === 'percent' && /^(?:waste|extra|over)$/.test(next?.word ?? '')) return false;
    // A size in front of goods that nobody counted ("the half inch drywall") is the goods' own.
    return !(isSizeOfGoods(frame.chunks, k) && !DIMENSIONS.test(next?.word ?? ''));
  }
  if (q.unit !== null && q.unit !== undefined) return false;
  // A bare number is a reading where the clause says that something sits at, reads, or must come to it.
  if (q.group?.kind === 'pair' && q.group.size >= 2) return !isSizeOfGoods(frame.chunks, k);
  const before = frame.chunks[k - 1];
  const lead = before?.word ?? '';
  if (
    next &&
    (isNounTerm(next) || (next.kind === 'word' && /^(of|more|left|times|coats?|guys|people)$/.test(next.word)))
  )
    return false;
  // "Top at 82", "screed temp 21": a label and its figure, with no verb.
  if (
    frame.predicate === 'none' &&
    k === frame.chunks.length - 1 &&
    (lead === 'at' || /^(?:temp|moisture|flow|pressure|voltage|static|humidity|reading)$/.test(lead)) &&
    frame.chunks.some(isNounTerm)
  )
    return true;
  if (/^(?:wide|tall|high|long|deep|thick)$/.test(next?.word ?? '')) return true;
  if (before?.owner && k === frame.verbAt + 1 && !isPerson(frame.subject)) return true;
  if (frame.verbAt < 0 || k <= frame.verbAt - 1) return false;
  if (isPerson(frame.subject) && !/^(at|to|reads?|reading)$/.test(lead)) return false;
  return (
    /^(at|to|reads?|reading|about|around|under|over|says?|wants?|needs?|said|min|minimum|max)$/.test(lead) &&
    READS.test(frame.lemma ?? 'be')
  );
}

function isSizeOfGoods(chunks: readonly Chunk[], k: number): boolean {
  const end = nounPhraseFrom(chunks, k + 1);
  const head = chunks.slice(k + 1, end).findLast((c) => isNounTerm(c) || c.kind === 'word');
  return (
    head !== undefined &&
    isGoods(head) &&
    !/^(gap|hole|crack|opening|joint|reveal|leg|legs|bead|piece|section)$/.test(head.word)
  );
}

function measurementOf(talk: Talk, frame: Frame, at: number, k: number, q: Quantity): Measurement {
  const { chunks } = frame;
  const after = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)).filter((c) => c.kind !== 'quantity');
  const dimension = after.find((c) => DIMENSIONS.test(c.word))?.word;
  const noun = after.filter(
    (c) =>
      isNounTerm(c) ||
      (c.kind === 'word' &&
        !DIMENSIONS.test(c.word) &&
        !isPreposition(c) &&
        c.word.length > 1 &&
        !/^(?:by|too|used|away|each)$/.test(c.word)),
  );
  const subject = frame.subject.filter((c) => c.kind !== 'quantity');
  let named: Chunk[] = [];
  if (subject.length && !isPointer(subject) && !isPerson(subject)) named = subject;
  else if (frame.predicate === 'none') named = chunks.slice(0, k).filter((c) => c.kind !== 'quantity');
  else if (frame.verbAt >= 0 && frame.verbAt < k) named = thingIn(chunks.slice(frame.verbAt + 1, k));
  if (!named.length || isPointer(named)) named = noun.some((c) => isNounTerm(c)) ? [] : thingIn(chunks.slice(k + 1));
  if (!named.length && !noun.length) named = antecedent(talk, at);
  const of =
    [phrase(named), phrase(noun)].filter(Boolean).join(' ') ||
    phrase(antecedent(talk, at)) ||
    phrase(thingIn(chunks)) ||
    (frame.area ?? 'measurement');
  const wanted =
    frame.predicate === 'owed' ||
    frame.predicate === 'imperative' ||
    /\b(min|minimum|max|maximum|spec|must|should|needs?|wants?|has to|supposed|till it reads|under|at least|at most)\b/.test(
      talk.text.slice(frame.start, frame.end).toLowerCase(),
    );
  const start = named.length && named[0]!.start < q.start && named[0]!.start >= frame.start ? named[0]!.start : q.start;
  const last = after.length && after[0]!.start >= q.end ? chunks[k + after.length]! : chunks[k]!;
  return {
    ...base(
      talk,
      frame,
      `measurement/${wanted ? 'wanted' : 'found'}`,
      { start: Math.min(start, q.takenBackFrom ?? start), end: Math.max(q.end, last.end) },
      q.unitFrom === 'none' ? 0.6 : 0.85,
    ),
    kind: 'measurement',
    of: withKind(of, dimension, q),
    value: q.value.valueOf(),
    exact: q.value.toFraction(),
    unit: unitOf(talk, frame, of, q),
    role: wanted ? 'wanted' : 'found',
    ...(q.bound && { bound: q.bound }),
    ...(q.tolerance && { tolerance: q.tolerance }),
    ...(q.doubt && { ask: q.doubt }),
  };
}

const DIMENSION_NAMES: Readonly<Record<string, string>> = {
  wide: 'width',
  tall: 'height',
  high: 'height',
  long: 'length',
  deep: 'depth',
  thick: 'thickness',
  showing: 'exposure',
};
const KIND_NAMES: Readonly<Record<string, string>> = {
  temperature: 'temperature',
  pressure: 'pressure',
  voltage: 'voltage',
  slope: 'slope',
  torque: 'torque',
  area: 'area',
};

/** The thing with what of it was measured: `opening width`, `can temperature`, `sawcut spacing`. */
function withKind(of: string, dimension: string | undefined, q: Quantity): string {
  const damp =
    q.unitKind === 'percent' && !/\b(?:humidity|moisture|waste|slope|charge|relative)\b/.test(of)
      ? 'moisture'
      : undefined;
  const part = dimension
    ? (DIMENSION_NAMES[dimension] ?? dimension)
    : q.onCenter
      ? 'spacing'
      : (damp ?? KIND_NAMES[q.unitKind ?? '']);
  return part && !of.includes(part) ? `${of} ${part}` : of;
}

/** "Put eighty pounds on it" tests a pipe in psi; a bare pair in a metric note is in its metres or millimetres. */
function unitOf(talk: Talk, frame: Frame, of: string, q: Quantity): string {
  if (
    q.unit === 'lb' &&
    /\b(?:put|held|test|tested|air|pressure|pumped|charged)\b/.test(frame.chunks.map((c) => c.word).join(' '))
  )
    return 'psi';
  if (q.unit) return q.unit;
  const metric = talk.reading.quantities.some((other) => /^(?:mm|cm|m)$/.test(other.unit ?? ''));
  if (metric && q.group?.kind === 'pair') return q.value.valueOf() < 20 ? 'm' : 'mm';
  return impliedUnit(of, q);
}

/** What a bare reading is in, by what was read: common practice, no source. */
function impliedUnit(of: string, q: Quantity): string {
  if (/\b(temp|temps|temperature|thermostat|water heater|air)\b/.test(of)) return 'F';
  if (/\bstatic\b/.test(of) && q.value.valueOf() < 5) return 'in wc';
  if (/\b(moisture|humidity|rh)\b/.test(of)) return '%';
  if (/\b(pressure|gauge)\b/.test(of)) return 'psi';
  if (/\b(tub|shower|faucet|hot water|water)\b/.test(of) && q.value.valueOf() >= 90) return 'F';
  return 'in';
}
