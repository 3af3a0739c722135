export { attempt, dayKey, due, type MailSettings, mailRow, type Sent, sameWords, wordsKey } from './outbox.ts';
export { type Summary, summaryOf } from './summary.ts';
