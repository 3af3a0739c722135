import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { actualSide } from '../calculators/lumber.ts';
import { absurdWaste, show } from '../calculators/reckoned.ts';
import { atSpacing, bays, type Counted, gapsUnder, sideBySide } from '../calculators/spacing.ts';
import { unknownUnitIn } from '../reading/doubts.ts';
import { adds, restates } from '../reading/restated.ts';
import { figureIds, type Said, sentencesOf } from '../reading/said.ts';
import { type Terms, termsIn } from '../reading/terms.ts';
import { asks, isDone, wants } from '../reading/wanted.ts';
import type { ComputedLine } from '../types.ts';
import { holeConcrete } from './concrete.ts';
import { line, type Row } from './line.ts';
import { madeMore } from './madeMore.ts';
import { countedIn, holds, KINDS, type RowTold } from './row.ts';
import { namesRows, rowsIn } from './told.ts';

interface Answer {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
}

/**
 * Pieces counted along a run: studs, joists and posts at a spacing, boards and pickets side by side, balusters under a
 * gap; with hangers, rails, plates and the concrete of post holes. `standing`: rows whose pieces are there already,
 * counted for what goes with them. `claimed` gives the figures read, note by note, so
 * that no other take-off reads them again.
 */
export function rowLines(
  notes: readonly Said[],
): Answer & { standing: ComputedLine[]; claimed: Map<string, Set<number>> } {
  const rows: Row[] = [];
  const claimed = new Map<string, Set<number>>();
  const questions: Answer['questions'] = [];
  for (const said of notes) {
    if (rows.length === 0 && !namesRows(said)) continue;
    const here = rows.filter((r) => r.area === said.area);
    const alike = here.at(-1) && madeMore(here.at(-1)!, said);
    if (alike) continue;
    for (const told of rowsIn(
      said,
      here.map((r) => r.item),
    )) {
      const standing = here.find((r) => r.item === told.item);
      const odd = told.spacing && told.runs.length === 0 ? unknownUnitIn(said) : null;
      if (odd)
        questions.push({
          noteId: said.noteId,
          ask: `"${odd}" for the ${told.item}: say it in feet, inches or metres.`,
        });
      if (holds(told.item) && countedIn(said, told.item)) continue;
      if (!tells(told, standing !== undefined) || isPutUp(said.words, told.item)) continue;
      if (standing && !speaksOf(said, standing, notes)) continue;
      const terms = termsIn(said);
      const row = standing ?? newRow(said, told, terms);
      if (standing) update(standing, told, terms);
      else rows.push(row);
      row.noteIds.push(said.noteId);
      row.wanted ||= wants(said.words) || terms.waste !== null || terms.packSize !== null;
      row.asked ||= asks(said);
      const sold = holds(told.item) ? [] : besideRow(said, told, terms);
      claimed.set(said.noteId, new Set([...(claimed.get(said.noteId) ?? []), ...told.used, ...sold]));
    }
  }
  const answers = rows.map(settle);
  return {
    standing: rows.filter((row) => row.there).flatMap((row) => settle({ ...row, there: null }).lines),
    lines: answers.flatMap((a) => a.lines),
    questions: [...questions, ...answers.flatMap((a) => a.questions)],
    claimed,
  };
}

/**
 * A later note is about a row where it names the pieces beside a figure, or says otherwise or more of what was said last and
 * names no goods that the row's own notes do not.
 */
function speaksOf({ words, terms }: Said, { item, noteIds }: Row, notes: readonly Said[]): boolean {
  const { named } = KINDS.find((k) => k.item === item)!;
  if (sentencesOf(words).some((s) => named.test(s) && figureIds(s).length > 0)) return true;
  if (!restates(words) && !adds(words)) return false;
  const known = notes.flatMap((note) => (noteIds.includes(note.noteId) ? note.terms : [])).map(({ term }) => term.name);
  return terms.every(({ term: { kind, name } }) => (kind !== 'material' && kind !== 'part') || known.includes(name));
}

/** The note tells of work done, in a sentence that names the pieces if any does; what else was done says nothing of them. */
function isPutUp(words: string, item: string): boolean {
  const named = KINDS.find((k) => k.item === item)!.named;
  const about = sentencesOf(words).filter((s) => named.test(s));
  return isDone(words) && (about.length === 0 || about.some(isDone));
}

/** How goods are sold, where a sentence about the row tells it: other sentences speak of other goods. */
const besideRow = (said: Said, { used }: RowTold, terms: Terms): number[] =>
  sentencesOf(said.words)
    .map(figureIds)
    .filter((ids) => ids.some((id) => used.has(id)))
    .flatMap((ids) => ids.filter((id) => terms.used.has(id)));

const newRow = (said: Said, told: RowTold, terms: Terms): Row => ({
  ...told,
  area: said.area,
  terms,
  wanted: false,
  asked: false,
  noteIds: [],
});

/** A note tells of a row where it gives its spacing, its gap or its holes; a later note may give any part. */
function tells(told: RowTold, standing: boolean): boolean {
  if (standing) return told.runs.length > 0 || told.spacing !== null || told.hole !== null || told.extra !== null;
  const spaced =
    told.spacing !== null ||
    (told.gap !== null &&
      /board|picket|slat|batten/.test(told.item) &&
      (told.width !== null || (told.item === 'deck board' && told.section !== null))) ||
    (told.gap !== null && told.item === 'baluster');
  const holes = told.hole !== null && told.holes !== null;
  if (told.item === 'pier') return holes;
  return (spaced && told.runs.length > 0) || holes;
}

/** What is said later stands in place of what was said before; what it leaves out stays. */
function update(row: Row, told: RowTold, terms: Terms): void {
  for (const [key, value] of Object.entries(told))
    if (value !== null && !(Array.isArray(value) && value.length === 0) && !(value instanceof Set))
      Object.assign(row, { [key]: value });
  row.terms = {
    ...row.terms,
    ratios: terms.ratios.length ? terms.ratios : row.terms.ratios,
    waste: terms.waste ?? row.terms.waste,
    packSize: terms.packSize ?? row.terms.packSize,
  };
}

function settle(row: Row): Answer {
  const out: Answer = { lines: [], questions: [] };
  const noteId = row.noteIds.at(-1)!;
  const refused = (why: string): Answer => ({ lines: [], questions: [{ noteId, ask: `${called(row)}: ${why}` }] });
  // What holds up a run is no part of what is wasted of it.
  const waste = (holds(row.item) ? null : row.terms.waste) ?? new Fraction(0);
  const silly = absurdWaste(waste);
  if (silly) return refused(silly.why);
  const posts = row.runs.length > 0 && row.item !== 'pier' ? countRow(row) : null;
  if (posts && !posts.ok) return refused(posts.why);
  if (posts) {
    const cut = waste.compare(0) > 0 ? new Fraction(posts.count).mul(waste.add(1)).ceil().valueOf() : posts.count;
    const steps = [posts.working];
    if (cut !== posts.count) steps.push(`+ ${show(waste.mul(100))} % = ${cut}`);
    if (row.extra) steps.push(`+ ${row.extra} = ${cut + row.extra}`);
    if (!row.there)
      out.lines.push(line(row, called(row), sizeOf(row), cut + (row.extra ?? 0), steps.join('; '), posts.assumptions));
    out.lines.push(...companions(row, posts.count));
  }
  if (row.hole) {
    const concrete = holeConcrete(row, row.holes ?? posts?.count ?? 0);
    if (typeof concrete === 'string') return refused(concrete);
    out.lines.push(concrete);
  }
  return out;
}

const called = (row: Row) => row.called ?? row.item;

type CountedRow = Counted & { assumptions: string[] };

/** All the runs of a row; runs that meet at corners share the piece there. */
function countRow(row: Row): CountedRow | { ok: false; why: string } {
  const assumptions: string[] = [];
  const usual = KINDS.find((k) => k.item === row.item)?.usual?.spacing;
  let count = 0;
  const steps: string[] = [];
  for (const run of row.runs) {
    const one = countRun(row, row.inset ? run.sub(row.inset.mul(2)) : run, usual, assumptions);
    if (!one.ok) return one;
    count += one.count;
    steps.push(one.working);
  }
  if (row.corners && row.runs.length > 1 && row.item === 'fence post') {
    count -= row.runs.length - 1;
    steps.push(`less ${row.runs.length - 1} shared at the corners = ${count}`);
  } else if (row.runs.length > 1) steps.push(`together ${count}`);
  if (row.times && row.times > 1) {
    count *= row.times;
    steps.push(`x ${row.times} = ${count}`);
  }
  return { ok: true, count, working: steps.join('; '), assumptions: [...new Set(assumptions)] };
}

/** Actual width where a nominal section was said. */
function widthOf(row: Row): Fraction | null {
  const wide = row.section?.split('x')[row.item === 'baluster' ? 0 : 1];
  return row.width ?? (wide ? actualSide(new Fraction(wide)) : null);
}

/** Between deck boards where nobody said: common practice, no source. */
const DECK_GAP = new Fraction(1, 8);
/** A sphere of 4 in must not pass: IRC R312.1.3. */
const BALUSTER_GAP = new Fraction(4);

function countRun(row: Row, run: Fraction, usual: number | undefined, assumptions: string[]) {
  const width = widthOf(row);
  if (row.item === 'baluster' && !row.spacing) {
    if (!width) return { ok: false as const, why: 'how wide is one baluster?' };
    if (!row.gap) assumptions.push('no gap over 4 in (IRC R312.1.3)');
    return gapsUnder(run, width, row.gap?.width ?? BALUSTER_GAP);
  }
  if (!row.spacing && width && /board|picket|slat/.test(row.item)) {
    if (!row.gap && row.item === 'deck board') assumptions.push('1/8 in between boards, common practice');
    const gap = row.gap?.width ?? (row.item === 'deck board' ? DECK_GAP : new Fraction(0));
    return sideBySide(run, width, gap);
  }
  const spacing = row.spacing ?? (usual ? new Fraction(usual) : null);
  if (!spacing) return { ok: false as const, why: 'how far apart?' };
  if (!row.spacing) assumptions.push(`${usual} in on center, common practice`);
  return atSpacing(run, spacing, !row.noEnds);
}

/** `2x4 8 ft`. */
const sizeOf = (row: Row): string | null =>
  [row.section, row.piece && pieceLength(row.piece)].filter(Boolean).join(' ') || null;

/** In whole feet, else in metres where it is cut by the tenth of one, else in inches. */
function pieceLength(inches: Fraction): string {
  const feet = inches.div(12);
  if (feet.d === 1n) return `${feet.toString()} ft`;
  const metres = convert(inches, 'in', 'm')!;
  return metres.mul(10).d === 1n ? `${show(metres)} m` : `${show(inches)} in`;
}

/** Hangers, rails and plates that were asked for beside the row. */
function companions(row: Row, count: number): ComputedLine[] {
  const out: ComputedLine[] = [];
  if (row.hangers)
    out.push(line(row, 'joist hanger', row.section, count * row.hangers, `${count} joists x ${row.hangers}`));
  const run = row.runs.reduce((sum, r) => sum.add(r), new Fraction(0)).mul(row.times ?? 1);
  if (row.rails && row.spacing) {
    const sections = row.runs.reduce((sum, r) => sum + bays(r, row.spacing!), 0);
    out.push(line(row, 'fence rail', row.railSize, sections * row.rails, `${sections} sections x ${row.rails} rails`));
  }
  if (row.item === 'baluster' && row.rails) {
    const sections = row.runs.length * (row.times ?? 1);
    out.push(line(row, 'rail', row.railSize, sections * row.rails, `${sections} sections x ${row.rails} rails`));
  }
  if (row.panels && row.spacing) {
    const sections = row.runs.reduce((sum, r) => sum + bays(r, row.spacing!), 0);
    out.push(line(row, 'fence panel', pieceLength(row.spacing), sections, `${sections} sections, a panel each`));
  }
  if (row.plates) {
    const stick = row.plateStick ?? row.piece ?? new Fraction(96);
    const plain = row.treated ? row.plates - 1 : row.plates;
    const size = sizeOf({ ...row, piece: stick });
    const plateLine = (item: string, plates: number, assumed: string[] = []) => {
      const feet = run.mul(plates);
      const working = `${plates} plates x ${show(run.div(12))} ft = ${show(feet.div(12))} ft; in ${show(stick.div(12))} ft sticks ${show(feet.div(stick))}, up`;
      out.push(line(row, item, size, feet.div(stick).ceil().valueOf(), working, assumed));
    };
    plateLine('plate', plain, row.plates === 3 ? ['one bottom and two top plates, common practice'] : []);
    if (row.treated) plateLine('treated plate', 1);
  }
  return out;
}
