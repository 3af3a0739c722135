import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { iconPng } from '../../server/page/icons.ts';
import { JOB } from './house.ts';
import { context, holdPhone, house, openScreen, page, soon, unsent, write } from './phone.ts';

holdPhone();

let complaints: string[];

beforeEach(() => {
  complaints = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => /content security policy/i.test(message.text()) && complaints.push(message.text()));
});
afterEach(() => expect(complaints).toEqual([]));

describe('talk', () => {
  it('answers a note with each fact under its own words', async () => {
    await openScreen('talk');
    await write('Gap at the sill is 1-3/8". Need two tubes of caulk. The storm door closer is broken.');
    const slip = page.locator('.slip', { hasText: 'caulk' });
    await slip.locator('.reply li').first().waitFor();
    expect(await slip.locator('.words').textContent()).toContain('Need two tubes of caulk');
    expect(await slip.locator('u.k-material').allTextContents()).toEqual([
      expect.stringContaining('two tubes of caulk'),
    ]);
    expect(await slip.locator('u.k-measurement').allTextContents()).toEqual([expect.stringContaining('1-3/8"')]);
    expect(await slip.locator('u.k-problem').allTextContents()).toEqual([expect.stringContaining('broken')]);
    expect(await page.inputValue('#words')).toBe('');
    expect(await house.store.notes(JOB.id)).toHaveLength(6);
  });

  it('puts a wrong number right by a tap, and takes that back by another', async () => {
    await openScreen('talk');
    await page.locator('.fact', { hasText: 'deck screw' }).click();
    await page.fill('dialog [name=amount]', '2 1/2');
    await page.click('dialog [type=submit]');
    await page.waitForSelector('.status button');
    await soon(unsent).toBe('0');
    const entries = async () => (await house.store.entries(JOB.id)).map((e) => e.what);
    expect((await entries()).at(-1)).toMatchObject({ kind: 'correctFact', fact: { exact: '5/2', quantity: 2.5 } });
    await page.click('.status button');
    await soon(async () => (await entries()).at(-1)?.kind).toBe('undo');
  });

  it('leaves out what was no fact', async () => {
    await openScreen('talk');
    await page.locator('.fact', { hasText: 'rail post' }).click();
    await page.getByRole('button', { name: 'Not this' }).click();
    await page.click('a[href="#list"]');
    await soon(() => page.locator('.item', { hasText: 'rail post' }).count()).toBe(0);
  });
});

describe('punch list', () => {
  it('ticks an item done with one tap, and opens it again with Undo', async () => {
    await openScreen('list');
    const valve = page.locator('.item', { hasText: 'shutoff valve' });
    await valve.locator('.tick').click();
    await soon(() => valve.count()).toBe(0);
    await page.click('.status button');
    await soon(() => valve.count()).toBe(1);
  });

  it('shows how an item came about, in the words that were said', async () => {
    await openScreen('list');
    await page.locator('.task', { hasText: 'shutoff valve' }).click();
    expect(await page.locator('dialog .history q').first().textContent()).toContain('Shutoff valve is seized');
  });

  it('shows one area, what is ready there first, with what it waits for and its age', async () => {
    await openScreen('list');
    expect(await page.locator('.list .area h2').allTextContents()).toEqual(['laundry', 'back porch', 'hall']);
    await page.getByLabel('Area shown').selectOption({ value: 'laundry' });
    expect(await page.locator('.list .area h2').allTextContents()).toEqual(['laundry']);
    const lines = await page.locator('.item .task-notes').allTextContents();
    const waits = lines.findIndex((line) => line.startsWith('waiting'));
    expect(lines.slice(0, waits).every((line) => line.startsWith('ready'))).toBe(true);
    expect(lines[waits]).toMatch(/waits for .*ready tomorrow.*1 day old/);
    expect(lines.join()).toMatch(/2 days old/);
    await page.getByRole('button', { name: /^Waiting/ }).click();
    expect(await page.locator('.item').count()).toBe(lines.length - waits);
    await page.getByLabel('Area shown').selectOption({ label: 'Every area' });
  });

  it('moves an item to another area', async () => {
    await openScreen('list');
    await page.locator('.task', { hasText: 'rail post' }).click();
    await page.fill('dialog [name=area]', 'hall');
    await page.click('dialog [type=submit]');
    const hall = page.locator('.area', { has: page.locator('h2', { hasText: /^hall$/i }) });
    await soon(() => hall.locator('.item', { hasText: 'rail post' }).count()).toBe(1);
  });

  it('prints boxes and a line to sign, and none of the buttons', async () => {
    await openScreen('list');
    await page.emulateMedia({ media: 'print' });
    for (const who of ['For the builder', 'For the owner'])
      expect(await page.locator('.signature', { hasText: who }).isVisible()).toBe(true);
    expect(await page.locator('.item .tick rect').first().isVisible()).toBe(true);
    for (const part of ['.tabs', '.head', '.filters', '.screen-only'])
      expect(await page.locator(part).isVisible()).toBe(false);
    const paper = await page.pdf({ format: 'Letter' });
    expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
    await page.emulateMedia({ media: 'screen' });
    await page.click('a[href="#order"]');
    await page.locator('.order .item').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.order .tick rect').first().isVisible()).toBe(true);
    expect(await page.locator('.plain:visible').allTextContents()).toEqual([]);
  });

  it('prints what is done beside what is left, whatever the screen was showing, and shows that again', async () => {
    await openScreen('list');
    await page.locator('.item', { hasText: 'shutoff valve' }).locator('.tick').click();
    const left = page.locator('.item');
    await soon(() => page.locator('.item', { hasText: 'shutoff valve' }).count()).toBe(0);
    const shown = await left.count();
    await page.evaluate(() => {
      window.print = () => {
        Object.assign(window, { paper: document.querySelector('.list')!.textContent });
        dispatchEvent(new Event('afterprint'));
      };
    });
    await page.getByRole('button', { name: 'Print walk-through' }).click();
    await soon(() => page.evaluate(() => (window as { paper?: string }).paper ?? '')).toContain('shutoff valve');
    await soon(() => left.count()).toBe(shown);
  });
});

describe('order and day', () => {
  it('marks a line bought, with its reason in sight', async () => {
    await openScreen('order');
    const screws = page.locator('.item', { hasText: 'deck screws' });
    expect(await screws.locator('.because').textContent()).not.toBe('');
    await screws.locator('.t-bought').click();
    await expect
      .poll(async () => (await house.store.entries(JOB.id)).at(-1)?.what)
      .toMatchObject({ kind: 'setOrder', state: 'bought' });
  });

  it('marks a line as there already, and no longer asks for it', async () => {
    await openScreen('order');
    const screws = page.locator('.item', { hasText: 'deck screws' });
    await screws.locator('.t-have').click();
    await soon(() => screws.locator('.t-have').getAttribute('aria-pressed')).toBe('true');
    await soon(async () => (await house.store.entries(JOB.id)).at(-1)?.what).toMatchObject({ state: 'have' });
    await page.click('a[href="#trip"]');
    await page.waitForSelector('.trip');
    expect(await page.locator('.trip').textContent()).not.toMatch(/1 box deck screws/);
    await page.click('a[href="#order"]');
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(() => screws.locator('.t-have').getAttribute('aria-pressed')).toBe('false');
  });

  it('shows the e-mail and says that it became a file', async () => {
    await openScreen('day');
    await page.frameLocator('.letter iframe').locator('body', { hasText: JOB.name }).waitFor();
    // By keyboard: a click right after scrolling past a sandboxed frame is hit-tested against the old scroll position.
    await page.getByRole('button', { name: 'Write it to a file now' }).press('Enter');
    await soon(() => page.locator('[role=status]').textContent()).toMatch(/written to .*\.eml/);
  });
});

describe('no signal', () => {
  it('sends the same note again where the answer was lost, and the server keeps one', async () => {
    await openScreen('talk');
    let lost = 0;
    await page.route('**/notes/*', async (route) => {
      if (route.request().method() !== 'PUT' || lost++) return route.continue();
      await route.fetch();
      await route.abort('connectionreset');
    });
    await write('Need one bag of mortar.');
    await soon(unsent).toBe('1');
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await soon(unsent).toBe('0');
    expect((await house.store.notes(JOB.id)).filter((n) => n.text.includes('mortar'))).toHaveLength(1);
  });

  it('keeps sound and picture on the phone, each sent on its own, and shows them from there', async () => {
    await openScreen('talk');
    await house.away();
    await page.getByRole('button', { name: 'Record' }).click();
    await page.getByRole('button', { name: 'Stop, send' }).waitFor();
    await page.setInputFiles('input[type=file]', { name: 'wall.png', mimeType: 'image/png', buffer: iconPng(64) });
    await page.waitForSelector('.tray img');
    await page.waitForTimeout(1200);
    await page.getByRole('button', { name: 'Stop, send' }).click();
    await soon(unsent).toBe('3');
    const slip = page.locator('.slip', { has: page.locator('.not-sent') });
    expect(await slip.locator('audio').getAttribute('src')).toMatch(/^blob:/);
    expect(await slip.locator('.not-sent').textContent()).toBe('Not sent yet.');
    await soon(() => slip.locator('img').evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(64);
    const kept = await page.evaluate(async () => {
      const db = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open('scratchcoat');
        asked.onsuccess = () => done(asked.result);
      });
      const all = await new Promise<{ kind: string; data?: Blob }[]>((done) => {
        const asked = db.transaction('outbox').objectStore('outbox').getAll();
        asked.onsuccess = () => done(asked.result);
      });
      return Object.fromEntries(all.map((p) => [p.kind, [p.data?.type.split(';')[0], (p.data?.size ?? 0) > 100]]));
    });
    expect(kept).toMatchObject({ recording: ['audio/webm', true], photo: ['image/jpeg', true] });
  });

  it('lets a recording be typed up later, as of the moment at which it was spoken', async () => {
    await openScreen('talk');
    await page.getByRole('button', { name: 'Record' }).click();
    await page.getByRole('button', { name: 'Stop, send' }).waitFor();
    await page.waitForTimeout(1200);
    await page.getByRole('button', { name: 'Stop, send' }).click();
    await soon(unsent).toBe('0');
    await context.clock.setFixedTime(new Date('2026-05-13T22:00:00Z'));
    await soon(() => page.locator('.slip .reply').last().textContent()).toMatch(/waits to be typed or heard/);
    await page.getByRole('button', { name: '1 recording to type' }).click();
    await page.fill('.type-up textarea', 'Need one bag');
    await page.getByRole('button', { name: 'Later' }).click();
    // Half typed words are there when it is taken up again, also on a page opened anew.
    await page.reload();
    await page.getByRole('button', { name: 'Type what it says' }).click();
    await soon(() => page.inputValue('.type-up textarea')).toBe('Need one bag');
    await soon(() => page.evaluate(() => document.querySelector<HTMLAudioElement>('.type-up audio')!.readyState)).toBe(
      4,
    );
    await page.locator('.type-up textarea').press('F2');
    await page.getByRole('button', { name: 'Stop', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Slower' }).click();
    expect(await page.evaluate(() => document.querySelector<HTMLAudioElement>('.type-up audio')!.playbackRate)).toBe(
      0.7,
    );
    await page.fill('.type-up textarea', 'Need one bag of mortar.');
    await page.click('.type-up [type=submit]');
    await soon(async () => (await house.store.notes(JOB.id)).length).toBe(7);
    const [spoken, typed] = (await house.store.notes(JOB.id)).slice(-2);
    expect(spoken!.recordingId).not.toBeNull();
    expect(typed).toMatchObject({ recordingId: spoken!.recordingId, saidAt: spoken!.saidAt });
    // It waits no more, and its sound is with its words.
    await soon(() => page.locator('.unheard').count()).toBe(0);
    await soon(() => page.locator('.slip', { hasText: 'one bag of mortar' }).locator('audio').count()).toBe(1);
    expect(await page.locator('.slip', { hasText: 'Recording, not typed' }).count()).toBe(0);
  });

  it('keeps a tick made without signal and sends it later', async () => {
    await openScreen('list');
    await page.waitForSelector('.item');
    await house.away();
    await page.locator('.item', { hasText: 'shutoff valve' }).locator('.tick').click();
    await soon(() => page.locator('.item', { hasText: 'shutoff valve' }).count()).toBe(0);
    expect(await unsent()).toBe('1');
    await house.back();
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await soon(unsent).toBe('0');
    expect((await house.store.entries(JOB.id)).at(-1)?.what).toMatchObject({ kind: 'setState', state: 'done' });
  });

  it('keeps in sight what the server will not take', async () => {
    await openScreen('talk');
    await write('bad \u0001 words');
    await page.waitForSelector('.parked');
    expect(await page.locator('.parked').textContent()).toContain('Not taken');
    await page.getByRole('button', { name: 'Throw away' }).click();
    await soon(unsent).toBe('0');
  });
});
