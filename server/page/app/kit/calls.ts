import type {
  ApiProblem,
  CatalogueView,
  JobBrief,
  JobView,
  NewJob,
  NewWord,
  RereadingView,
  SummaryView,
  Talk,
  TaughtWord,
} from '../../../http/api.ts';
import type { CheckAnswer, CheckForm, Form, FormAnswer } from '../../../takeoff/form/index.ts';

/** The server answered, and said no. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    message: string,
    /** May the same be tried again by itself? */
    readonly retry: boolean,
  ) {
    super(message);
  }
}

/**
 * One call to the server.
 * @throws {Refused} for an answer that is no success; another error where there is no answer at all.
 */
export const call = async <T>(method: string, path: string, body?: Blob | object): Promise<T> =>
  parsed(await textOf(method, path, body)) as T;

async function textOf(method: string, path: string, body?: Blob | object): Promise<string> {
  const raw = body instanceof Blob;
  const answer = await asked(`/api/${path}`, {
    method,
    ...(body && {
      headers: { 'content-type': raw ? body.type.split(';')[0] || 'application/octet-stream' : 'application/json' },
      body: raw ? body : JSON.stringify(body),
    }),
  });
  const text = await answer.text();
  if (answer.ok) return text;
  const problem = parsed(text) as Partial<ApiProblem> | null;
  const retry = problem?.retry ?? (answer.status >= 500 || answer.status === 408 || answer.status === 429);
  throw new Refused(
    answer.status,
    problem?.message ?? `The server is in trouble (${answer.status}). Try again later.`,
    retry,
  );
}

async function asked(path: string, init: RequestInit): Promise<Response> {
  try {
    // A network that swallows calls is no network.
    const patience = init.body instanceof Blob ? 180_000 : 30_000;
    return await fetch(path, { ...init, signal: AbortSignal.timeout(patience) });
  } catch (cause) {
    // Each browser has words of its own for this, and none that help.
    throw new Error('The server does not answer. Try again where there is signal.', { cause });
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const at = (id: string) => encodeURIComponent(id);

export const jobsCall = () => call<JobBrief[]>('GET', 'jobs');
export const saveJobCall = (id: string, job: NewJob) => call<JobBrief>('PUT', `jobs/${at(id)}`, job);
export const catalogueCall = () => call<CatalogueView>('GET', 'catalogue');
export const putCatalogueBackCall = () => call<CatalogueView>('POST', 'catalogue/before');
export const dropCatalogueCall = () => call<CatalogueView>('DELETE', 'catalogue');
export const sendCatalogueCall = (file: Blob) =>
  call<CatalogueView>('PUT', 'catalogue', new Blob([file], { type: 'text/csv' }));
export const viewCall = (id: string) => call<JobView>('GET', `jobs/${at(id)}`);
export const talksCall = (id: string) => call<Talk[]>('GET', `jobs/${at(id)}/notes`);
export const rereadingCall = (id: string) => call<RereadingView>('GET', `jobs/${at(id)}/rereading`);
export const readAgainCall = (id: string) => call<RereadingView>('POST', `jobs/${at(id)}/rereading`);
export const reckonCall = (form: Form) => call<FormAnswer>('POST', 'reckon', form);
export const checkCall = (form: CheckForm) => call<CheckAnswer>('POST', 'reckon/check', form);
export const takeReadingBackCall = (id: string, reading: string) =>
  call<RereadingView>('DELETE', `jobs/${at(id)}/rereading/${at(reading)}`);
export const wordsCall = () => call<TaughtWord[]>('GET', 'words');
export const teachCall = (id: string, word: NewWord) => call<TaughtWord[]>('PUT', `words/${at(id)}`, word);
export const forgetCall = (id: string) => call<TaughtWord[]>('DELETE', `words/${at(id)}`);
export const summaryCall = (id: string, day: string) => call<SummaryView>('GET', `jobs/${at(id)}/summary?day=${day}`);
export const sendSummaryCall = (id: string, day: string) =>
  call<{ sent: 'smtp'; to: string[] } | { sent: 'file'; path: string }>('POST', `jobs/${at(id)}/summary/send`, { day });

export const photoPath = (jobId: string, id: string) => `/api/jobs/${at(jobId)}/photos/${at(id)}`;
export const recordingPath = (jobId: string, id: string) => `/api/jobs/${at(jobId)}/recordings/${at(id)}`;
export const paperPath = (jobId: string, paper: 'walk-through' | 'shopping') => `/api/jobs/${at(jobId)}/${paper}.pdf`;
export const letterPath = (jobId: string, day: string) => `/api/jobs/${at(jobId)}/summary.html?day=${day}`;
