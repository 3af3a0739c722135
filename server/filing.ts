import type { Fact } from '../parser/types.ts';
import type { Histories } from './histories.ts';
import type { Reply } from './http/api.ts';
import {
  blanked,
  type Entry,
  filingOf,
  type Job,
  type Note,
  nextReading,
  noteOf,
  type Refiling,
  readAnew,
  refilingIn,
  standing,
} from './jobs/index.ts';
import type { Site as FoldSite } from './jobs/meeting.ts';
import { numberOf } from './jobs/said/numbers.ts';
import type { Store } from './store/index.ts';
import { replyTo } from './talk/index.ts';
import { isUnheard } from './voice/unheard.ts';

const PARSER = '1';

/** What filing needs of the site. */
export interface Desk {
  store: Pick<Store, 'jobs' | 'note'>;
  histories: Histories;
  /** Reads words as a job's notes are read. */
  readingOf: (job: Job) => Promise<(text: string, saidAt: string, area: string | null) => Fact[]>;
  /** The job with the packs in which goods are sold. */
  atPacks: (job: Job) => Promise<Job & Pick<FoldSite, 'packFor'>>;
  today: (job: Job) => string;
}

/** Entries to keep, in whichever jobs they belong, and what is answered. */
export interface Filed {
  entries: Entry[];
  reply: Reply;
}

/** Reads a note and files what it says under the job that it was said to, or under the ones that it names. */
export async function fileNote(desk: Desk, job: Job, note: Note): Promise<Filed> {
  if (isUnheard(note)) return { entries: [entryOf(job, note, [], note.text)], reply: unheardReply(note.id) };
  const others = (await desk.store.jobs()).filter((one) => one.id !== job.id);
  const moved = refilingIn(note.text, job, others, numberOf);
  const refiled = moved && (await refile(desk, job, note, moved, others));
  if (refiled) return refiled;
  const filing = filingOf(note.text, job, others);
  const own = filing?.texts.get(job.id) ?? note.text;
  const here = entryOf(job, note, await factsOf(desk, job, note, own), own);
  const filed: Filed = { entries: [here], reply: await replyFor(desk, job, note, [here]) };
  for (const [id, text] of filing?.texts ?? []) {
    const other = others.find((one) => one.id === id);
    if (!other) continue;
    const entry = entryOf(other, note, await factsOf(desk, other, note, text), text);
    addTo(filed, other, entry, await replyFor(desk, other, note, [entry]));
  }
  const unclear = filing?.unclear;
  const names = others.map((one) => one.name).join(' or ');
  if (unclear) filed.reply.ask = `Which job is "${unclear.quote}" for: ${names}? Say "that was for" and its name.`;
  return filed;
}

const unheardReply = (noteId: string): Reply => ({
  noteId,
  facts: [],
  lines: [
    {
      kind: 'answer',
      text: 'Recording kept. It waits to be typed or heard; nothing of it is on the list until then.',
      item: null,
    },
  ],
  ask: null,
  unread: false,
});

const factsOf = async (desk: Desk, job: Job, note: Note, text: string): Promise<Fact[]> =>
  (await desk.readingOf(job))(text, note.saidAt, note.area ?? null);

const entryOf = (job: Job, note: Note, facts: Fact[], text: string): Entry => ({
  id: note.jobId === job.id ? note.id : `${note.id}+${job.id}`,
  jobId: job.id,
  at: note.saidAt,
  by: note.by,
  source: { noteId: note.id, start: 0, end: note.text.length },
  what: { kind: 'noteRead', facts, text, parser: PARSER },
});

async function replyFor(desk: Desk, job: Job, note: Note, entries: readonly Entry[]): Promise<Reply> {
  const until = `${[desk.today(job), note.saidAt.slice(0, 10)].sort().at(-1)}T23:59:59`;
  const { before, after } = await desk.histories.withMore(await desk.atPacks(job), entries, until);
  const [entry] = entries;
  return replyTo(before, after, note.id, entry?.what.kind === 'noteRead' ? entry.what.facts : []);
}

/** What another job took from the note, told with that job's name. */
function addTo({ entries, reply }: Filed, job: Job, entry: Entry, theirs: Reply): void {
  entries.push(entry);
  if (!reply.facts.length) reply.lines = [];
  reply.lines.push(...theirs.lines.map(({ kind, text }) => ({ kind, text: `${job.name}: ${text}`, item: null })));
  reply.ask ??= theirs.ask && `${job.name}: ${theirs.ask}`;
}

/** Words told before go to another job; null where the list does not know which words are meant. */
async function refile(
  desk: Desk,
  job: Job,
  note: Note,
  { job: id, number }: Refiling,
  others: readonly Job[],
): Promise<Filed | null> {
  const to = others.find((one) => one.id === id)!;
  const kept = await desk.histories.entries(job);
  const notes = standing(kept, note.saidAt).filter((entry) => entry.what.kind === 'noteRead');
  const item =
    number === null
      ? null
      : (await desk.histories.state(await desk.atPacks(job), note.saidAt)).items.find((i) => i.number === number);
  const from = item
    ? notes.find((entry) => item.key.startsWith(`${noteOf(entry)}/`))
    : number === null
      ? notes.findLast((entry) => entry.id !== note.id && textOf(entry).trim())
      : undefined;
  const told = from && (await desk.store.note(noteOf(from)));
  if (from?.what.kind !== 'noteRead' || !told) return null;
  const words = item?.history[0]?.words;
  const span = words ? sentenceOf(from.what.text, words) : filingOf(told.text, job, others)?.unclear;
  const [start, end] = span ? [span.start, span.end] : [0, told.text.length];
  const left = blanked(from.what.text, [[start, end]]);
  const gone = blanked(from.what.text, [
    [0, start],
    [end, from.what.text.length],
  ]);
  const anew = readAnew(from, from.what, {
    facts: await factsOf(desk, job, told, left),
    text: left,
    parser: nextReading(kept),
  });
  const mine = entryOf(job, note, [], '');
  const theirs = await arrival(desk, to, told, gone);
  const reply = { ...(await replyFor(desk, to, note, [theirs])), facts: [] };
  const filed: Filed = { entries: [mine], reply: { ...reply, lines: [] } };
  if (anew) filed.entries.push(anew);
  addTo(filed, to, theirs, reply);
  return filed;
}

/** The words as the other job takes them: beside what it has from the same note. */
async function arrival(desk: Desk, to: Job, told: Note, gone: string): Promise<Entry> {
  const kept = await desk.histories.entries(to);
  const there = standing(kept, '9999').find((entry) => noteOf(entry) === told.id && entry.what.kind === 'noteRead');
  if (there?.what.kind !== 'noteRead') return entryOf(to, told, await factsOf(desk, to, told, gone), gone);
  const text = [...there.what.text].map((c, k) => (c === ' ' ? gone[k]! : c)).join('');
  const facts = await factsOf(desk, to, told, text);
  return readAnew(there, there.what, { facts, text, parser: nextReading(kept) }) ?? there;
}

const textOf = ({ what }: Entry) => (what.kind === 'noteRead' ? what.text : '');

function sentenceOf(text: string, words: string): { start: number; end: number } | null {
  const at = text.indexOf(words);
  if (at < 0) return null;
  const start = Math.max(...['.', ';', '!', '?', '\n'].map((stop) => text.lastIndexOf(stop, at))) + 1;
  const length = text.slice(at + words.length).search(/[.;!?\n]/);
  return { start, end: length < 0 ? text.length : at + words.length + length };
}
