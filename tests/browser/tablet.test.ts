import { expect, it } from 'vitest';
import { JOB, TABLET } from './house.ts';
import { context, holdPhone, house, openScreen, page, soon, unsent, write } from './phone.ts';

holdPhone({ viewport: TABLET, hasTouch: true });

const section = (title: string) =>
  page.locator('section', { has: page.getByRole('heading', { name: title, exact: true }) });

it('says, reads back and puts right by a tap', async () => {
  await openScreen('talk');
  await write('Hall door sticks. Need 3 hinges.');
  const slip = page.getByRole('log').locator('.slip', { hasText: 'Hall door sticks' });
  await slip.locator('.reply', { hasText: 'To buy: 3 hinges' }).waitFor();
  await slip.locator('.fact', { hasText: 'hinges' }).click();
  await page.fill('dialog [name=amount]', '4');
  await page.click('dialog [type=submit]');
  await soon(() => slip.locator('.fact', { hasText: '4 hinges' }).count()).toBe(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await soon(() => slip.locator('.fact', { hasText: '3 hinges' }).count()).toBe(1);
});

it('keeps a note, a tick and a bought line without signal, and sends each once', async () => {
  await openScreen('list');
  await house.away();
  await page.locator('.item', { hasText: 'shutoff valve' }).locator('.tick').click();
  await page.click('a[href="#order"]');
  await page.locator('.item', { hasText: 'deck screws' }).locator('.t-bought').click();
  await page.click('a[href="#talk"]');
  await write('Need four joist hangers.');
  await soon(unsent).toBe('3');
  await house.back();
  await page.evaluate(() => dispatchEvent(new Event('online')));
  await soon(unsent).toBe('0');
  expect((await house.store.notes(JOB.id)).filter((n) => n.text.includes('joist hangers'))).toHaveLength(1);
  const kinds = (await house.store.entries(JOB.id)).map((e) => e.what.kind);
  expect(kinds.filter((kind) => kind === 'setState' || kind === 'setOrder')).toHaveLength(2);
});

it('tells before going back what is ready, to bring, to cut, to mind, and what waits until when', async () => {
  await openScreen('talk');
  await write('Scrape the old paint off the hall window tomorrow.');
  await page.locator('.slip', { hasText: 'Scrape the old paint' }).locator('.reply').waitFor();
  await page.click('a[href="#trip"]');
  await section('Ready').waitFor();
  expect(await section('Ready').textContent()).toContain('shutoff valve');
  expect(await section('Bring').textContent()).toContain('1 box deck screws');
  expect(await section('Cut and set to').textContent()).toContain('41-5/8 in');
  // The house is of 1962.
  expect(await section('Mind').textContent()).toMatch(/lead/i);
  expect(await section('Not yet').textContent()).toMatch(/vinyl plank.*ready tomorrow/);
  expect(await section('Not yet').locator('svg').isVisible()).toBe(true);
});

it('tells of a day what was done, found, bought and spent', async () => {
  await openScreen('day');
  await page.getByLabel('Which day').selectOption('2026-05-12');
  expect(await page.locator('.day').textContent()).toContain('2 notes, $38 spent');
  expect(await section('Done').textContent()).toContain('drywall');
  expect(await section('Bought').textContent()).toContain('joint compound');
  await page.getByLabel('Which day').selectOption('2026-05-11');
  expect(await section('Found').textContent()).toContain('shutoff valve: seized');
});

it('reaches every screen by its tab, in the order in which it is read out, replies in a live region', async () => {
  await openScreen('talk');
  expect(await page.getByRole('log').getAttribute('aria-live')).toBe('polite');
  const parts = await page.evaluate(() =>
    [...document.querySelectorAll('header, main, [role=log], #words, [role=status], nav')].map(
      (el) => el.id || el.getAttribute('role') || el.tagName.toLowerCase(),
    ),
  );
  expect(parts).toEqual(['header', 'main', 'log', 'words', 'status', 'nav']);
  for (const tab of await page.locator('nav a').all()) {
    await tab.tap();
    await soon(() => tab.getAttribute('aria-current')).toBe('page');
  }
});

it('can be installed', async () => {
  await page.goto(house.url);
  const devtools = await context.newCDPSession(page);
  const { errors, data } = await devtools.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  expect(JSON.parse(data!)).toMatchObject({ display: 'standalone', start_url: '/' });
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // Of the test's own window, not of the page.
  expect(installabilityErrors.map((e) => e.errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
});
