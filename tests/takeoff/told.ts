/** Plays a case's notes as a job and tells what the list, its checks and its cautions come to. */
import { readFileSync } from 'node:fs';
import Fraction from 'fraction.js';
import { readNote } from '../../parser/index.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { bringOf } from '../../server/jobs/bring.ts';
import { type Entry, fold, type JobState } from '../../server/jobs/index.ts';
import { replyTo } from '../../server/talk/index.ts';

export interface Case {
  id: string;
  rooms: string[];
  /** How the answers came about. */
  because?: string;
  builtYear?: number;
  notes: { saidAt: string; text: string }[];
  asOf: string;
  want: {
    order?: { item: string; quantity: number }[];
    noOrder?: string[];
    checks?: { of: string; result: string; figureNear?: number }[];
    /** Results that must not stand, such as one from a reading since taken again. */
    noChecks?: { of: string; result: string }[];
    open?: { task: string; readyOn: string }[];
    cautions?: string[];
    noCautions?: string[];
    /** Tools and small parts to load for what can be worked on. */
    bring?: string[];
    /** The reply to the last note says that the work is planned too early. */
    warns?: boolean;
  };
}

export const casesIn = (path: string): Case[] =>
  readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Case);

/** The job's state at its end, and the lines of the reply to its last note. */
export function played({ id, rooms, builtYear, notes, asOf }: Omit<Case, 'want'>): {
  state: JobState;
  lines: string[];
} {
  const job = { areas: rooms, builtYear: builtYear ?? null };
  const entries = notes.map((note, k): Entry => {
    const noteId = `${id}-${k}`;
    const { facts } = readNote(note.text, { saidAt: note.saidAt, areas: rooms });
    return {
      id: noteId,
      jobId: id,
      at: note.saidAt,
      by: null,
      source: { noteId, start: 0, end: note.text.length },
      what: { kind: 'noteRead', facts, text: note.text, parser: '1' },
    };
  });
  const state = fold(job, entries, asOf);
  const last = entries.at(-1)!;
  const facts = last.what.kind === 'noteRead' ? last.what.facts : [];
  const reply = replyTo(fold(job, entries.slice(0, -1), asOf), state, last.id, facts);
  return { state, lines: reply.lines.map((l) => l.text) };
}

/** The word that a line of the order must hold: `tile` of `subway tiles`. */
const headOf = (item: string) => item.split(' ').at(-1)!.replace(/s$/, '');

/** Whether an item, which goes by the words in which it was told, says each word of what is wanted. */
const isTold = (told: string, wanted: string) => wanted.split(' ').every((word) => told.includes(word));

/** What is missing or wrong against what a case wants, in words; empty where it is met. */
export function missesOf(given: Case): string[] {
  const { state, lines } = played(given);
  const {
    order = [],
    noOrder = [],
    checks = [],
    noChecks = [],
    open = [],
    cautions = [],
    noCautions = [],
    bring = [],
    warns,
  } = given.want;
  const hazards = state.cautions.map((c) => c.hazard);
  const { tools, parts } = bringOf(state, builtIn());
  const brought = [...tools, ...parts].map((b) => b.what);
  const bought = state.order.map((l) => ({
    name: `${l.item} ${l.size ?? ''}`,
    amount: l.quantity === null ? null : Number(new Fraction(l.quantity)),
  }));
  return [
    ...order
      .filter((w) => !bought.some((l) => l.name.includes(headOf(w.item)) && l.amount === w.quantity))
      .map(
        (w) =>
          `order ${w.quantity} ${w.item}: ${state.order.map((l) => `${l.item} ${l.size ?? ''} ${l.quantity} ${l.unit}`).join(' | ')}`,
      ),
    ...noOrder
      .filter((w) => bought.some((l) => l.name.includes(w)))
      .map((w) => `no order of ${w}: ${JSON.stringify(bought)}`),
    ...noChecks
      .filter((w) => state.checks.some((c) => c.of.includes(w.of) && c.result === w.result))
      .map((w) => `no check ${w.of} ${w.result}`),
    ...checks
      .filter(
        (w) =>
          !state.checks.some(
            (c) =>
              c.of.includes(w.of) &&
              c.result === w.result &&
              (w.figureNear === undefined || Math.abs(Number.parseFloat(c.figure) - w.figureNear) < 0.02),
          ),
      )
      .map((w) => `check ${w.of} ${w.result} ${w.figureNear ?? ''}: ${JSON.stringify(state.checks)}`),
    ...open
      .filter((w) => !state.items.some((i) => isTold(i.task, w.task) && i.readyOn === w.readyOn))
      .map((w) => `wait ${w.task} ${w.readyOn}: ${state.items.map((i) => `${i.task} ${i.readyOn}`).join(' | ')}`),
    ...cautions.filter((w) => !hazards.some((h) => h.includes(w))).map((w) => `caution ${w}: ${hazards.join(', ')}`),
    ...bring.filter((w) => !brought.includes(w)).map((w) => `bring ${w}: ${brought.join(', ')}`),
    ...noCautions.filter((w) => hazards.some((h) => h.includes(w))).map((w) => `no caution ${w}`),
    ...(warns && !lines.some((l) => /^Too early/.test(l)) ? [`warning: ${lines.join(' | ')}`] : []),
  ];
}

/** The fit checks of a job's notes: `box fill: fits: 18 cu in`, what is missing where it cannot be said. */
export const checksOf = (rooms: string[], ...texts: string[]): string[] =>
  played({
    id: 'c',
    rooms,
    notes: texts.map((text, k) => ({ saidAt: `2026-06-09T1${k}:00:00`, text })),
    asOf: '2026-06-09T20:00:00',
  }).state.checks.map((c) => [c.of, c.result, c.result === 'cannot say' ? c.missing : c.figure].join(': '));
