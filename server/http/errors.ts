import type { ApiProblem } from './api.ts';

/** Every way a call can be refused: its status, whether the phone may try again by itself, and what to do. */
export const PROBLEMS = {
  'note-empty': { status: 400, retry: false, message: 'The note is empty. Say or type something, then send.' },
  'note-too-long': {
    status: 413,
    retry: false,
    message:
      'The note is too long for one piece (256,000 characters at most). It is still on your phone: split it and send the parts.',
  },
  'note-not-text': {
    status: 400,
    retry: false,
    message: 'That is not text. Send words; a recording goes up as a recording.',
  },
  'note-other-words': { status: 409, retry: false, message: 'That note id already holds other words. Both are kept.' },
  'enclosure-kind': {
    status: 415,
    retry: false,
    message:
      'That kind of file is not taken. Photos as JPEG or PNG, sound as WebM, MP4, Ogg or WAV. It stays on your phone.',
  },
  'enclosure-too-big': {
    status: 413,
    retry: false,
    message: 'The file is over 40 MB. It stays on your phone: send a shorter recording or a smaller photo.',
  },
  'catalogue-wrong': {
    status: 422,
    retry: false,
    message:
      'The price list was not taken, and the one from before still stands. Put this right in the file and send it again.',
  },
  'catalogue-too-big': {
    status: 413,
    retry: false,
    message: 'The price list is over 4 MB, and the one from before still stands. Send only the lines that you buy.',
  },
  'cannot-reckon': { status: 422, retry: false, message: 'That cannot be reckoned.' },
  'body-not-json': {
    status: 400,
    retry: false,
    message: 'The request could not be read as JSON. Send the note again.',
  },
  'body-wrong': { status: 400, retry: false, message: 'Something in the request is missing or wrong.' },
  'no-such-job': {
    status: 404,
    retry: false,
    message: 'There is no such job. Pick one from the list; your note stays on the phone.',
  },
  'not-found': { status: 404, retry: false, message: 'There is nothing at that address.' },
  'other-site': { status: 403, retry: false, message: 'This call came from another site and was refused.' },
  'too-many': { status: 429, retry: true, message: 'Too many calls in a minute. It is tried again by itself.' },
  'mail-failed': {
    status: 502,
    retry: true,
    message: 'The mail server did not take the mail. It stays in the outbox and is tried again.',
  },
  'store-failed': {
    status: 503,
    retry: true,
    message:
      'The store cannot be written just now. Your note stays on the phone and is sent again by itself. Check the disk of the machine that runs Scratchcoat.',
  },
} as const;

export type ProblemCode = keyof typeof PROBLEMS;

/** Thrown anywhere below a route; turned into an answer in one place. */
export class Refused extends Error {
  readonly code: ProblemCode;
  readonly detail: string | undefined;

  constructor(code: ProblemCode, detail?: string) {
    super(detail ? `${PROBLEMS[code].message} (${detail})` : PROBLEMS[code].message);
    this.code = code;
    this.detail = detail;
  }
}

export const problemOf = (error: Refused): ApiProblem => ({
  code: error.code,
  message: error.message,
  retry: PROBLEMS[error.code].retry,
});
