import { describe, expect, it } from 'vitest';
import { iconPng } from '../../server/page/icons.ts';
import { JOB } from './house.ts';
import { holdPhone, house, openScreen, page, reopened, shellKept, soon, unsent, write } from './phone.ts';

holdPhone({ serviceWorkers: 'allow' });

const undo = () => page.getByRole('button', { name: 'Undo' }).click();
const back = async () => {
  await house.back();
  await page.evaluate(() => dispatchEvent(new Event('online')));
};
const notes = async () => (await house.store.notes(JOB.id)).slice(5);
const tray = () => page.locator('.tray img');
const addPhotos = (...sizes: number[]) =>
  page.setInputFiles(
    'input[accept*=jpeg]',
    sizes.map((n) => ({ name: `${n}.png`, mimeType: 'image/png', buffer: iconPng(n) })),
  );
const recorded = async () => {
  await page.getByRole('button', { name: 'Record' }).click();
  await page.getByRole('button', { name: 'Stop, send' }).waitFor();
  await page.waitForTimeout(1200);
};

describe('what is not sent yet', () => {
  it('outlasts another screen and a closed page: photos and the words beside them', async () => {
    await openScreen('talk');
    await addPhotos(64, 96);
    await soon(() => tray().count()).toBe(2);
    await page.click('a[href="#list"]');
    await page.click('a[href="#talk"]');
    await soon(() => tray().count()).toBe(2);
    await page.locator('#words').pressSequentially('Hall wall is cracked.');
    // Longer than the pause after which typed words are kept; the page goes without a word then.
    await page.waitForTimeout(1500);
    await reopened();
    await openScreen('talk');
    await soon(() => tray().count()).toBe(2);
    const widths = () => tray().evaluateAll((all) => all.map((img) => (img as HTMLImageElement).naturalWidth));
    await soon(widths).toEqual([64, 96]);
    await soon(() => page.inputValue('#words')).toBe('Hall wall is cracked.');
    await page.click('.composer .primary');
    await soon(async () => (await notes()).length).toBe(1);
    await soon(unsent).toBe('0');
    const [note] = await notes();
    expect(note).toMatchObject({ text: 'Hall wall is cracked.' });
    for (const id of note!.photoIds)
      expect((await fetch(`${house.url}/api/jobs/${JOB.id}/photos/${id}`)).status).toBe(200);
    expect(note!.photoIds).toHaveLength(2);
    // Side by side, or the reply would stand a screen below its words.
    const photos = page.locator('.slip', { hasText: 'Hall wall is cracked.' }).locator('.photo');
    expect(new Set(await photos.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top))).size).toBe(1);
    await reopened();
    await openScreen('talk');
    expect(await tray().count()).toBe(0);
    expect(await page.inputValue('#words')).toBe('');
  });

  it('a recording goes on while another screen is looked at, is dropped at a tap, and comes back by another', async () => {
    await openScreen('talk');
    await recorded();
    await page.click('a[href="#order"]');
    await page.click('a[href="#talk"]');
    await page.getByRole('button', { name: 'Drop it' }).click();
    await page.getByRole('button', { name: 'Record' }).waitFor();
    await reopened();
    await openScreen('talk');
    expect(await page.locator('audio').count()).toBe(0);
    await recorded();
    await page.getByRole('button', { name: 'Drop it' }).click();
    await undo();
    await page.locator('.recorded audio').waitFor();
    // Heard before it goes; also on a page opened anew.
    await reopened();
    await openScreen('talk');
    await page.locator('.recorded audio').waitFor();
    expect(await notes()).toEqual([]);
    await write('Under the sink.');
    await soon(async () => (await notes()).length).toBe(1);
    await soon(unsent).toBe('0');
    const [note] = await notes();
    expect(note).toMatchObject({ text: 'Under the sink.', recordingId: expect.any(String) });
    expect((await fetch(`${house.url}/api/jobs/${JOB.id}/recordings/${note!.recordingId}`)).status).toBe(200);
    expect(await page.locator('.recorded').count()).toBe(0);
  });
});

describe('a note that waits for signal', () => {
  it('is taken out with its photo before it goes, and comes back by a tap', async () => {
    await openScreen('talk');
    await house.away();
    await addPhotos(64);
    await tray().waitFor();
    await write('Need four joist hangers.');
    const slip = page.locator('.slip', { hasText: 'joist hangers' });
    await slip.getByRole('button', { name: /^Take out/ }).click();
    await soon(() => slip.count()).toBe(0);
    expect(await unsent()).toBe('0');
    await undo();
    await slip.locator('img').waitFor();
    expect(await unsent()).toBe('2');
    await slip.getByRole('button', { name: /^Take out/ }).click();
    await soon(unsent).toBe('0');
    await back();
    await page.locator('.unsent', { hasText: 'No signal' }).waitFor({ state: 'detached' });
    expect(await notes()).toEqual([]);
  });

  it('is put right, and only what it says then goes out, with the time at which it was said', async () => {
    await openScreen('talk');
    await shellKept();
    await page.reload();
    await page.waitForSelector('.slip');
    await house.away();
    await write('Need four joist hangers.');
    const slip = page.locator('.slip', { hasText: 'joist hangers' });
    await slip.getByRole('button', { name: 'Change words' }).click();
    await page.fill('dialog [name=words]', 'Need fourteen joist hangers.');
    await page.selectOption('dialog [name=area]', 'back porch');
    await page.click('dialog [type=submit]');
    await slip.locator('.fact', { hasText: '14 joist hangers' }).waitFor();
    expect(await page.locator('.slip .not-sent').count()).toBe(1);
    // For a moment the note may stand there as it was and as it is.
    const facts = () => page.locator('.slip', { hasText: 'joist hangers' }).locator('.fact').allTextContents();
    await undo();
    await soon(facts).toEqual(['to buy4 joist hangers']);
    await undo();
    await soon(facts).toEqual(['to buy14 joist hangers']);
    await back();
    await soon(unsent).toBe('0');
    await slip.locator('.reply').waitFor();
    expect(await notes()).toMatchObject([
      { text: 'Need fourteen joist hangers.', area: 'back porch', saidAt: '2026-05-13T15:30:00' },
    ]);
  });

  it('has its facts put right by a tap, on a closed and opened page too; they follow the note once', async () => {
    await openScreen('talk');
    await shellKept();
    await page.reload();
    await page.waitForSelector('.slip');
    await house.away();
    await write('Need four joist hangers and two tubes of caulk.');
    const facts = () => page.locator('.slip', { hasText: 'joist hangers and' }).locator('.fact');
    const fact = (words: string) => facts().filter({ hasText: words });
    await fact('4 joist hangers').click();
    await page.fill('dialog [name=amount]', '14');
    await page.click('dialog [type=submit]');
    await fact('14 joist hangers').waitFor();
    await fact('2 tubes caulk').click();
    await page.getByRole('button', { name: 'Not this' }).click();
    await soon(() => facts().count()).toBe(1);
    await undo();
    await fact('2 tubes caulk').waitFor();
    await fact('2 tubes caulk').click();
    await page.getByRole('button', { name: 'Not this' }).click();
    await soon(() => facts().count()).toBe(1);
    await reopened();
    await page.goto(`${house.url}/#talk`);
    await fact('14 joist hangers').waitFor();
    expect(await facts().count()).toBe(1);
    await back();
    await soon(unsent).toBe('0');
    await soon(() => facts().allTextContents()).toEqual([expect.stringContaining('14 joist hangers')]);
    const entries = (await house.store.entries(JOB.id)).filter((e) => e.what.kind === 'correctFact');
    expect(entries).toHaveLength(2);
    const { state } = await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json();
    const line = (item: string) => state.order.find((l: { item: string }) => l.item === item)?.quantity;
    expect([line('joist hanger'), line('caulk')]).toEqual(['14', undefined]);
  });

  it('counts once where the server had it all along and only its answer was lost', async () => {
    await openScreen('talk');
    let lost = false;
    let signal = true;
    // The signal goes with the answer: a phone that reaches the server learns that the note is there.
    await page.route('**/api/**', async (route) => {
      if (!signal) return route.abort('connectionreset');
      if (lost || route.request().method() !== 'PUT') return route.continue();
      lost = true;
      signal = false;
      await route.fetch();
      await route.abort('connectionreset');
    });
    await write('Need one bag of mortar.');
    await soon(async () => (await notes()).length).toBe(1);
    const waits = page.locator('.slip', { has: page.getByRole('button', { name: 'Change words' }) });
    await waits.getByRole('button', { name: 'Change words' }).click();
    signal = true;
    await page.fill('dialog [name=words]', 'Need three bags of mortar.');
    await page.click('dialog [type=submit]');
    await soon(async () => (await notes()).length).toBe(2);
    await soon(unsent).toBe('0');
    const order = async () =>
      (await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json()).state.order
        .filter((line: { item: string }) => line.item === 'mortar')
        .map((line: { quantity: string }) => line.quantity);
    await soon(order).toEqual(['3']);
    // Nobody's words vanish: the first ones are there, told as taken back.
    await page.locator('.slip', { hasText: 'one bag of mortar' }).getByText('Taken back').waitFor();
  });
});
