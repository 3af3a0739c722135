import { tokenise } from '../../../parser/hearing/tokens.ts';
import { addHours } from '../../../parser/times/days.ts';
import { readTimes } from '../../../parser/times/index.ts';
import { readOnce } from '../reading/readOnce.ts';
import { type Said, saying, sentencesOf } from '../reading/said.ts';
import type { ComputedWait } from '../types.ts';
import { inTheCold, roomTemperature } from './cold.ts';
import { doubledIn, labelHours, longerHours } from './label.ts';
import { planHour } from './planHour.ts';
import type { Product, Step, Work } from './work.ts';
import { WORKS } from './works.ts';

const CORRECTS = /\b(?:wrong (?:bag|tub|can|one|bucket)|that was the|it was the|not the)\b/;
const SURFACE =
  /\b(?:floor|walls?|shower|backsplash|ceiling|tub(?! (?:says|wants|label))|patio|slab|pad|counter|footings?|deck|trim|stairs?)\b/;
/** Still to be done, so nothing sets yet. */
const AHEAD =
  /\b(?:gonna|going to|will|'ll|need to|needs to|have to|gotta|should|want to|to be|before (?:we|i))\b[^.]*$/;

/** A tile with an edge of 15 in or more waits longer under it, where it was set in plain modified mortar. */
const LARGE = {
  hours: 72,
  source: 'under large dense tile 48 to 72 h (flooringclarity.com, engineerfix.com: when to grout)',
};

/** A step that a note named, and the day planned for it. */
interface Named {
  plannedOn: string | null;
  /** "Waits till Monday": not before this day, whatever has set by then. */
  notBefore: string | null;
  plannedAt: number | null;
  noteId: string;
}

interface Laid {
  work: Work;
  product: Product;
  /** Said on the label; null where nobody said. */
  label: number | null;
  /** Degrees F under which the label asks for twice as long. */
  doubledUnder: number | null;
  from: string;
  surface: string;
  area: string | null;
  steps: Map<Step, Named>;
  degrees: number | null;
  noteId: string;
}

/** What one note tells of waits, whichever area it is in. */
interface Told {
  label: number | null;
  corrects: boolean;
  /** Hours more that it is given, from when the note was told. */
  longer: number | null;
  degrees: number | null;
  /** The product named, and whether it is told as laid, by kind of work. */
  works: readonly { product: Product | undefined; done: boolean }[];
}

/** Null where a note speaks of no work done, label or cold; the same words tell the same, so they are read once. */
const toldIn = readOnce((said): Told | null => {
  const sentences = sentencesOf(said.words);
  const told: Told = {
    label: labelHours(said),
    corrects: CORRECTS.test(said.words),
    longer: longerHours(said),
    degrees: roomTemperature(said),
    works: WORKS.map((work) => ({
      product: work.products.find((p) => p.named.test(said.words)),
      done: isDone(sentences, work),
    })),
  };
  const silent =
    told.label === null &&
    told.longer === null &&
    !told.corrects &&
    told.degrees === null &&
    !told.works.some((w) => w.done);
  return silent ? null : told;
});

/** Next steps that the notes name and that something must set for: from the label time said, else the published range. */
export function waitsIn(notes: readonly Said[]): ComputedWait[] {
  const laid = new Map<string, Laid>();
  for (const said of notes) {
    const told = toldIn(said);
    if (!told && laid.size === 0) continue;
    for (const [k, work] of WORKS.entries()) {
      const key = `${k}/${said.area ?? ''}`;
      if (told) hear(laid, key, said, told, told.works[k]!, work);
      const now = laid.get(key);
      if (now) takeNote(now, said, told?.degrees ?? null);
    }
  }
  return [...laid.values()].flatMap((l) => [...l.steps].map(([step, named]) => waitFor(l, step, named)));
}

/** Lays a work down, or puts its product and label time right. */
function hear(
  laid: Map<string, Laid>,
  key: string,
  said: Said,
  told: Told,
  { product, done }: Told['works'][number],
  work: Work,
): void {
  const stands = laid.get(key);
  if (stands && told.longer !== null && !done) {
    // Never sooner than what was told before.
    const before = Math.max(...work.steps.map((step) => hoursOf(stands, step).hours));
    if (addHours(stands.from, before) <= addHours(said.saidAt, told.longer))
      Object.assign(stands, { from: said.saidAt, label: told.longer, noteId: said.noteId });
  } else if (stands && (told.corrects || told.label !== null) && (product || told.label !== null)) {
    stands.product = product ?? stands.product;
    stands.label = told.label ?? (product ? null : stands.label);
    stands.noteId = said.noteId;
  } else if (product && done) laid.set(key, layDown(said, work, product, told.label));
}

const isDone = (sentences: readonly string[], { done }: Work): boolean =>
  sentences.some((sentence) => {
    const match = done.exec(sentence);
    return match !== null && !AHEAD.test(sentence.slice(0, match.index));
  });

function layDown(said: Said, work: Work, product: Product, label: number | null): Laid {
  return {
    work,
    product: large(said) && product.name === 'thinset' ? { ...product, ...LARGE } : product,
    label,
    doubledUnder: doubledIn(said),
    from: startOf(said),
    surface: SURFACE.exec(said.words)?.[0] ?? '',
    area: said.area,
    steps: new Map(),
    degrees: null,
    noteId: said.noteId,
  };
}

const WAITS_TILL = /\b(?:waits?|holds?)(?: off)? (?:till|til|until)\b/;

/** Steps, plans and temperatures that a note of the same area tells of while the work still sets. */
function takeNote(laid: Laid, said: Said, degrees: number | null): void {
  if (degrees !== null) laid.degrees = Math.min(laid.degrees ?? degrees, degrees);
  for (const step of laid.work.steps) {
    if (said.saidAt >= addHours(laid.from, hoursOf(laid, step).hours)) continue;
    for (const sentence of sentencesOf(said.words)) {
      const match = step.said.exec(sentence);
      if (!match) continue;
      const plan = sentence.slice(match.index);
      const [day, before] = [plannedDay(plan, said.saidAt), laid.steps.get(step)];
      const plannedOn = day ?? before?.plannedOn ?? null;
      const plannedAt = day ? planHour(plan, said.figures) : (before?.plannedAt ?? null);
      const notBefore = day && WAITS_TILL.test(plan) ? day : (before?.notBefore ?? null);
      laid.steps.set(step, { plannedOn, plannedAt, notBefore, noteId: said.noteId });
    }
  }
}

/** The label asks for twice the time under some degrees, and it is colder. */
const laidCold = ({ doubledUnder, degrees }: Laid): boolean =>
  doubledUnder !== null && degrees !== null && degrees < doubledUnder;

/** The label's hours, else the range's, longer in the cold; with what is said of them. */
function hoursOf(laid: Laid, step: Step): { hours: number; said: string } {
  const { product, label, work, degrees } = laid;
  return label === null
    ? inTheCold(step.hours ?? product.hours, work.cold, degrees)
    : { hours: label * (laidCold(laid) ? 2 : 1), said: ' on the label' };
}

function waitFor(laid: Laid, step: Step, named: Named): ComputedWait {
  const { product, label } = laid;
  const { hours, said } = hoursOf(laid, step);
  const ready = addHours(laid.from, hours);
  const area = laid.area && !laid.surface.includes(laid.area) ? laid.area : null;
  return {
    task: `${step.verb} the ${[area, laid.surface].filter(Boolean).join(' ')}`.trim(),
    area: laid.area,
    readyOn: [ready.slice(0, 10), named.notBefore ?? ''].sort().at(-1)!,
    waitingFor: `${product.name}, ${hours} h${said}${hours < 24 ? `, until ${ready.slice(11)}` : ''}`,
    source: label === null ? product.source : 'label time, as said',
    noteId: laid.noteId,
    namedIn: named.noteId,
    plannedOn: named.plannedOn,
    plannedAt: named.plannedAt,
    readyAt: ready.slice(11),
  };
}

/** Day on which the words plan a step: "tonight", "tomorrow", "friday"; null where they name none. */
function plannedDay(words: string, saidAt: string): string | null {
  const plain = words.replace(/\{[A-Z]\d+\}/g, 'some');
  const [day] = readTimes(tokenise(plain), plain, { now: saidAt, quantities: [] });
  if (day && !day.past && day.relation !== 'notBefore') return day.date;
  return /\b(?:today|tonight|this (?:aft|afternoon|evening|morning)|right (?:now|away)|later)\b|\bin \{T\d+\}/.test(
    words,
  )
    ? saidAt.slice(0, 10)
    : null;
}

const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const CLOCK = new RegExp(
  `\\b(?:at|around|about|by|from) (\\d{1,2}|${NUMBERS.join('|')})\\b(?! ?(?:inch|foot|feet|of|by|x)\\b)`,
);

/** When it was done: the last time before the note with the hour it names, "last tile at 11", else when it was told. */
function startOf(said: Said): string {
  const match = CLOCK.exec(said.words.replace(/\{N(\d+)\}/g, (_, id) => said.figures[Number(id)]!.value.toFraction()));
  const hour = match ? Number(match[1]) || NUMBERS.indexOf(match[1]!) + 1 : 0;
  const told = Number(said.saidAt.slice(11, 13));
  const at = [hour + 12, hour].find((h) => hour > 0 && h <= told && h < 24 && told - h <= 12);
  return at === undefined ? said.saidAt : `${said.saidAt.slice(0, 11)}${String(at).padStart(2, '0')}:00`;
}

const EDGE = saying(
  '<NL>(?: (?:in|inch|inches|square))*(?: [a-z]+)? (?:porcelain|tiles?|stone|slab|slate|marble|granite|travertine|limestone|planks?)\\b',
);
const SIZE = /\{[NLC](\d+)\} ?(?:x|by) ?\{[NLC](\d+)\}/;

/** A tile with an edge of 15 in or more, the trade's large tile (ANSI A108.02). */
function large({ words, figures }: Said): boolean {
  if (!/\b(?:porcelain|tiles?|stone|slab|slate|marble|granite|travertine|limestone|planks?)\b/.test(words))
    return false;
  const pair =
    SIZE.exec(words)
      ?.slice(1)
      .map((id) => figures[Number(id)]!) ?? [];
  // "Twenty four inch porcelain": a bare figure elsewhere may be anything.
  const edge = EDGE.exec(words);
  const named = edge ? [figures[Number(edge[1])]!].filter((f) => f.unit === null || f.unit === 'in') : [];
  return [...named, ...pair].some((f) => f.value.compare(15) >= 0 && f.value.compare(60) <= 0);
}
