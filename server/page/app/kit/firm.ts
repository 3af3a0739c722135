import { v7 as newId } from 'uuid';
import type { JobBrief, NewJob, NewWord, TaughtWord } from '../../../http/api.ts';
import { forgetCall, saveJobCall, teachCall } from './calls.ts';
import { chooseJob, now, say, show, sync } from './model.ts';
import { keepAll } from './phoneStore.ts';
import { askReader } from './reader.ts';

/** Keeps a job's particulars; what stood before can be put back. Only the server can: throws what its call throws. */
export async function saveJob(id: string, job: NewJob): Promise<void> {
  const before = now().jobs.find((j) => j.id === id);
  await saveJobCall(id, job);
  await chooseJob(id);
  say('Job kept.', before ? () => putBack(before) : null);
}

async function putBack({ id, name, zone, start, areas, crew, builtYear, mailTo, mailAt }: JobBrief): Promise<void> {
  await saveJobCall(id, { name, zone, start, areas, crew, builtYear, mailTo, mailAt });
  await sync();
  say('The job stands as before.');
}

/** A word that was put right and that the vocabulary does not hold is offered for teaching. */
export async function offerToTeach(said: string, word: NewWord): Promise<void> {
  const crew = now().view?.job.crew ?? [];
  const answer = await askReader({ id: newId(), ask: 'known', word: said, taught: now().words, crew });
  if (answer?.ask === 'known' && !answer.known) show({ offer: { ...word, also: [said] } });
}

/** The word on offer is looked at, or let go. */
export const dropOffer = () => show({ offer: null });

/** Teaches the firm a word, or teaches it otherwise. Only the server can: throws what its call throws. */
export async function teach(word: NewWord, id: string = newId()): Promise<void> {
  const before = now().words.find((w) => w.id === id);
  await changeWords(await teachCall(id, word));
  say(`“${word.name}” is read from the next note on.`, before ? () => teachAgain(before) : () => forget(id));
}

export async function forget(id: string): Promise<void> {
  const before = now().words.find((w) => w.id === id);
  await changeWords(await forgetCall(id));
  if (before) say(`“${before.name}” is forgotten.`, () => teachAgain(before));
}

const teachAgain = ({ id, ...word }: TaughtWord) => teach(word, id);

async function changeWords(words: TaughtWord[]): Promise<void> {
  show({ words });
  await keepAll('words', words);
}
