export { attempt, due, type MailSettings, mailRow, type Sent } from './outbox.ts';
export { type Summary, summaryOf } from './summary.ts';
