import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { simpleParser } from 'mailparser';
import { SMTPServer } from 'smtp-server';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { attempt, dayKey, due } from '../../server/mail/index.ts';
import { Site } from '../../server/site.ts';
import { openStore, type Store } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';
import { unheardText } from '../../server/voice/unheard.ts';

const JOB = {
  id: 'job-mail-0001',
  name: 'Barn loft',
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas: ['loft'],
  builtYear: 1950,
  mailTo: ['office@example.org'],
  mailAt: '17:30',
};

let folder: string;
let store: Store;
let smtp: SMTPServer;
let received: string[];
let refuse: number | null;
let now: Date;
let site: Site;
let url: string;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mail-test-'));
  store = await openStore(folder);
  received = [];
  refuse = null;
  smtp = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS'],
    onData(stream, _session, done) {
      const parts: Buffer[] = [];
      stream.on('data', (part: Buffer) => parts.push(part));
      stream.on('end', () => {
        if (refuse) return done(Object.assign(new Error('refused'), { responseCode: refuse }));
        received.push(Buffer.concat(parts).toString('utf8'));
        done();
      });
    },
  });
  await new Promise<void>((resolve) => smtp.listen(0, '127.0.0.1', () => resolve()));
  const { port } = smtp.server.address() as AddressInfo;
  url = `smtp://127.0.0.1:${port}`;
  now = new Date('2026-05-13T22:31:00Z');
  site = new Site({
    store,
    enclosures: new Enclosures(folder),
    now: () => now,
    mail: { smtpUrl: url, from: 'crew@example.org', folder },
  });
  await store.putJob(JOB);
  await site.take(JOB, 'note-0001', {
    saidAt: '2026-05-13T10:00:00',
    text: 'Loft window is cracked <b>. Need 2 bags of mortar.',
  });
});

afterEach(async () => {
  await new Promise<void>((resolve) => smtp.close(() => resolve()));
  await store.close();
  rmSync(folder, { recursive: true });
});

describe('the outbox', () => {
  it('sends one mail a day, as text and HTML, with nothing of a note run as HTML', async () => {
    await site.mailTick();
    await site.mailTick();
    expect(received).toHaveLength(1);
    const mail = await simpleParser(received[0]!);
    expect(mail.subject).toBe('Barn loft, Wed May 13: 0 done, 1 open, 1 to buy');
    expect(mail.text).toContain('2 bags mortar');
    expect(mail.html).not.toContain('<b>');
    expect(mail.headers.get('auto-submitted')).toBe('auto-generated');
    for (const line of (mail.text ?? '').split('\n')) expect(line.length).toBeLessThanOrEqual(76);
  });

  it('tries again later after a 451, with the same Message-ID', async () => {
    refuse = 451;
    await site.mailTick();
    expect(received).toHaveLength(0);
    refuse = null;
    await site.mailTick();
    expect(received).toHaveLength(0);
    now = new Date(now.getTime() + 2 * 60_000);
    await site.mailTick();
    expect(received).toHaveLength(1);
    const mail = await simpleParser(received[0]!);
    expect(await store.mail(mail.messageId!.slice(1).split('@')[0]!)).toMatchObject({ state: 'sent', attempts: 2 });
  });

  it('tries for three days while the server is away, and not for ever', async () => {
    refuse = 451;
    await site.mailTick();
    const begun = now.getTime();
    const hours = () => (now.getTime() - begun) / 3_600_000;
    const key = dayKey(JOB, '2026-05-13');
    for (let row = await store.mail(key); row?.state === 'due' && hours() < 200; row = await store.mail(key)) {
      now = new Date(row.nextAt);
      await attempt(store, row, { smtpUrl: url, from: 'crew@example.org', folder }, now);
    }
    expect(hours()).toBeGreaterThanOrEqual(72);
    expect(hours()).toBeLessThan(84);
  });

  it('sent again by hand is the very same mail, or another one under it where other words have come', async () => {
    await site.mailTick();
    await site.send(JOB, '2026-05-13');
    await site.take(JOB, 'note-0002', { saidAt: '2026-05-13T17:40:00', text: 'Loft stair tread is cracked.' });
    await site.send(JOB, '2026-05-13');
    await site.mailTick();
    const [first, again, other] = await Promise.all(received.map((raw) => simpleParser(raw)));
    expect(received).toHaveLength(3);
    expect(again!.messageId).toBe(first!.messageId);
    expect(again!.text).toBe(first!.text);
    expect(other!.text).toContain('tread');
    expect(other!.messageId).not.toBe(first!.messageId);
    expect(other!.inReplyTo).toBe(first!.messageId);
  });

  it('sent by hand early goes out again at its time only where something came since', async () => {
    now = new Date('2026-05-13T20:00:00Z');
    await site.send(JOB, '2026-05-13');
    now = new Date('2026-05-13T22:31:00Z');
    await site.mailTick();
    expect(received).toHaveLength(1);
    expect((await site.summary(JOB, '2026-05-13')).delivery.last).toMatchObject({ state: 'sent' });
    await site.take(JOB, 'note-0003', { saidAt: '2026-05-13T17:32:00', text: 'Loft floor swept.' });
    await site.mailTick();
    expect(received).toHaveLength(2);
  });

  it('reads as it would be told: days by name, a flaw that was dealt with as fixed, what is left to do apart from what waits', async () => {
    await site.take(JOB, 'note-0006', {
      saidAt: '2026-05-13T15:00:00',
      text: 'Loft window is fixed. Call the glazier on friday. Spent 40 dollars.',
    });
    const { text } = await site.summary(JOB, '2026-05-13');
    expect(text).toMatch(/DONE TODAY\n- 1\. .*fixed/);
    expect(text).toMatch(/FOR LATER\n- \d+\. call glazier.*Fri May 15/);
    expect(text).toMatch(/SPENT TODAY\n- \$40/);
    expect(text).not.toMatch(/\d{4}-\d\d-\d\d/);
    expect((await site.summary(JOB, '2026-05-12')).text).toMatch(/Nothing was said on this day/);
  });

  it('says that recordings wait to be typed, until they are', async () => {
    const spoken = { saidAt: '2026-05-13T11:00:00', recordingId: 'recording-0001' };
    await site.take(JOB, 'note-0004', { ...spoken, text: unheardText });
    const reply = (await site.talk(JOB)).at(-1)!.reply;
    expect(reply.lines.map((l) => l.text).join()).toMatch(/waits to be typed or heard/);
    expect((await site.summary(JOB, '2026-05-13')).text).toMatch(/RECORDINGS TO TYPE/);
    expect((await site.summary(JOB, '2026-05-12')).text).not.toMatch(/RECORDINGS/);
    await site.take(JOB, 'note-0005', { ...spoken, text: 'Loft stair tread is cracked.' });
    expect((await site.summary(JOB, '2026-05-13')).text).not.toMatch(/RECORDINGS/);
  });

  it('gives up at once on a 552 and keeps the reason', async () => {
    refuse = 552;
    await site.mailTick();
    now = new Date(now.getTime() + 24 * 60 * 60_000);
    expect(await store.dueMail(now.toISOString())).toEqual([]);
  });
});

describe('when a summary is due', () => {
  it.each([
    ['before its time', '2026-05-13T22:29:00Z', 0],
    ['at its time', '2026-05-13T22:30:00Z', 1],
    ['over six hours late', '2026-05-14T04:31:00Z', 0],
    ['under six hours late', '2026-05-14T04:29:00Z', 1],
    ['in winter time', '2026-12-13T23:30:00Z', 1],
    ['an hour too early in winter', '2026-12-13T22:30:00Z', 0],
  ])('%s', (_name, at, count) => {
    expect(due([JOB], new Date(at))).toHaveLength(count);
  });
});
