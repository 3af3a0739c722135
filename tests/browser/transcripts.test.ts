import { beforeEach, describe, expect, it } from 'vitest';
import { secondWords, wordsIn } from '../../server/page/app/talk/transcripts.ts';
import { JOB } from './house.ts';
import { holdPhone, house, page, soon } from './phone.ts';

const CAPTIONS = `WEBVTT

00:00:04.000 --> 00:00:08.000
<v Dana>OK we're in the laundry. The dryer vent is crushed.

00:01:10.500 --> 00:01:15.000
<v Luis>We need four lengths of vent pipe. Call the electrician tomorrow.
`;
const STAMPED = `[0:03] Back porch. The screen door is torn.
[2:15] Need two rolls of screen.`;

describe('a file of words', () => {
  it.each([
    [7, '0:07'],
    [187.6, '3:07'],
    [3760, '1:02:40'],
  ])('second %d is %s', (at, words) => expect(secondWords(at)).toBe(words));

  it.each([
    ['UTF-8', new TextEncoder().encode('½ in'), '½ in'],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0xbd, 0, 0x20, 0]), '½ '],
    ['the old Western page', new Uint8Array([0xbd, 0x20, 0x69]), '½ i'],
  ])('is read in %s', async (_name, bytes, words) => expect(await wordsIn(new Blob([bytes]))).toBe(words));
});

describe('a timed transcript', () => {
  holdPhone({ notes: false });
  beforeEach(async () => {
    await page.goto(house.url);
    await page.waitForSelector('.slips .empty');
  });

  it('is read from a chosen file, as of the moment at which it was said', async () => {
    await page.selectOption('.area-pick select', 'hall');
    await page.setInputFiles('input[accept*=vtt]', {
      name: 'walk.vtt',
      mimeType: 'text/vtt',
      buffer: Buffer.from(CAPTIONS),
    });
    expect(await page.locator('dialog').textContent()).toContain('walk.vtt');
    await page.fill('dialog [name=saidAt]', '2026-05-11T09:30');
    await page.click('dialog [type=submit]');
    const slip = page.locator('.slip', { hasText: 'vent pipe' });
    await slip.locator('.reply li').first().waitFor();
    expect(await slip.locator('.fact', { hasText: 'dryer vent' }).locator('i').textContent()).toBe('problem at 0:04');
    expect(await slip.locator('.fact', { hasText: 'vent pipe' }).locator('i').textContent()).toMatch(/at 1:10$/);
    const [note] = await house.store.notes(JOB.id);
    expect(note).toMatchObject({ text: CAPTIONS, saidAt: '2026-05-11T09:30:00', area: null });
    // "Tomorrow" as of the day it was said.
    await page.click('a[href="#list"]');
    await page.locator('.item', { hasText: 'call electrician' }).waitFor();
    expect(await page.locator('.item', { hasText: 'call electrician' }).textContent()).toMatch(/due|yesterday/);
  });

  it('is known when it is pasted, and the box is emptied only once it is sent', async () => {
    await page.fill('#words', STAMPED);
    await page.click('.composer .primary');
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await page.inputValue('#words')).toBe(STAMPED);
    await page.click('.composer .primary');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('.fact', { hasText: 'screen door' }).waitFor();
    expect(await page.inputValue('#words')).toBe('');
  });

  it('is folded away, and its facts shown a dozen at a time', async () => {
    const things = ['latch', 'hinge', 'sill', 'post', 'rail', 'tread', 'gutter', 'downspout', 'soffit', 'fascia'];
    const long = [...things, 'door', 'window', 'switch', 'outlet']
      .map(
        (thing, k) =>
          `[${k}:00] ${'We stand and look around here for a good while. '.repeat(2)}The ${thing} is cracked.`,
      )
      .join('\n');
    await page.fill('#words', long);
    await page.click('.composer .primary');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.locator('.slip .reply li').first().waitFor();
    expect(await page.locator('.slip .words').count()).toBe(0);
    expect(await page.locator('.fact').count()).toBe(12);
    await page.getByRole('button', { name: /more understood/ }).click();
    expect(await page.locator('.fact').count()).toBeGreaterThan(12);
    await page.locator('.long summary').click();
    await soon(() => page.locator('.slip .words u').count()).toBeGreaterThan(12);
  });

  it('is refused in words where the file is empty', async () => {
    await page.setInputFiles('input[accept*=vtt]', { name: 'a.txt', mimeType: 'text/plain', buffer: Buffer.from(' ') });
    await expect.poll(() => page.locator('[role=status]').textContent()).toBe('That file is empty.');
  });
});
