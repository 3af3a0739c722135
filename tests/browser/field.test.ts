import { describe, expect, it } from 'vitest';
import { JOB } from './house.ts';
import { context, holdPhone, house, openScreen, page, reopened, shellKept, soon, unsent, write } from './phone.ts';

holdPhone({ hasTouch: true, serviceWorkers: 'allow' });

describe('say it', () => {
  it('asks for nothing but the words, job and area being as they were (the seconds are measured by the bench)', async () => {
    await page.goto(house.url);
    await page.getByLabel('Area of the next note').selectOption('laundry');
    await shellKept();
    await reopened();
    await page.goto(house.url);
    await page.fill('#words', 'Shelf bracket is bent.');
    await page.press('#words', 'Enter');
    await page.locator('.slip', { hasText: 'Shelf bracket' }).waitFor();
    await soon(async () => (await house.store.notes(JOB.id)).at(-1)).toMatchObject({ jobId: JOB.id, area: 'laundry' });
  });

  it('answers first and shows what may be put right below', async () => {
    await page.goto(house.url);
    await page.fill('#words', 'Hall door sticks. Need 3 hinges. Opening is 32-3/8 inches.');
    await page.press('#words', 'Enter');
    const slip = page.locator('.slip', { hasText: '3 hinges' });
    await slip.locator('.reply').waitFor();
    const said = await slip.locator('.reply').textContent();
    expect(said).toMatch(/New, no\. \d+: hall door/);
    expect(said).toMatch(/To buy: 3 hinges/);
    expect(said).toMatch(/Measured: opening 32-3\/8 in/);
    const [reply, facts] = await Promise.all([
      slip.locator('.reply').boundingBox(),
      slip.locator('.facts').boundingBox(),
    ]);
    expect(reply!.y).toBeLessThan(facts!.y);
  });
});

it('takes a whole note back by one tap, its words kept, and brings it in again by another', async () => {
  await page.goto(house.url);
  await page.fill('#words', 'Stair tread is cracked.');
  await page.press('#words', 'Enter');
  const slip = page.locator('.slip', { hasText: 'Stair tread' });
  await slip.locator('.reply').waitFor();
  const listed = async () => {
    const view = await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json();
    return view.state.items.filter((i: { task: string }) => /tread/.test(i.task)).length;
  };
  expect(await listed()).toBe(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await slip.getByText('Taken back: its words are kept').waitFor();
  await soon(listed).toBe(0);
  // Opened anew it still stands so.
  await page.reload();
  await slip.getByText('Taken back: its words are kept').waitFor();
  await page.fill('#words', 'Window latch is bent.');
  await page.press('#words', 'Enter');
  await page.locator('.slip', { hasText: 'Window latch' }).locator('.reply').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await soon(() => page.locator('[role=status]').textContent()).toBe('Taken back.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.slip', { hasText: 'Window latch' }).locator('.reply').waitFor();
});

describe('no signal', () => {
  it('keeps the latest note in sight when the line about the signal takes room from it', async () => {
    await openScreen('talk');
    await shellKept();
    await page.reload();
    await page.waitForSelector('.slip');
    await house.away();
    await write('Need four joist hangers.');
    await page.locator('.slip', { hasText: 'joist hangers' }).locator('.fact').waitFor();
    await page.locator('.unsent', { hasText: 'No signal' }).waitFor();
    const hidden = () =>
      page.evaluate(() => {
        const [log, last] = ['.slips', '.slips section:last-of-type > :last-child'].map(
          (part) => document.querySelector(part)!.getBoundingClientRect().bottom,
        );
        return last! - log!;
      });
    await soon(hidden).toBeLessThan(2);
  });

  it('keeps a note through closing and opening, reads it on the phone, and sends it once', async () => {
    await openScreen('talk');
    await shellKept();
    await page.reload();
    await house.away();
    await write('Need four joist hangers. Porch light is dead.');
    await soon(unsent).toBe('1');
    await reopened();
    await openScreen('talk');
    const slip = page.locator('.slip', { hasText: 'joist hangers' });
    await slip.locator('u.k-material').waitFor();
    expect(await slip.locator('.not-sent').textContent()).toContain('Not sent yet');
    expect(await unsent()).toBe('1');
    await page.click('a[href="#list"]');
    expect(await page.locator('.item').count()).toBeGreaterThan(3);

    await house.back();
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await soon(unsent).toBe('0');
    const kept = (await house.store.notes(JOB.id)).filter((n) => n.text.includes('joist hangers'));
    expect(kept).toHaveLength(1);
    expect(kept[0]!.saidAt).toBe('2026-05-13T15:30:00');
  });

  it('opens list, order and briefing as they stood, and says that this is so', async () => {
    await page.goto(house.url);
    await page.waitForSelector('.slip');
    await shellKept();
    await page.close();
    await house.away();
    await reopened();
    await page.goto(`${house.url}/#list`);
    await soon(() => page.locator('.list .item').count()).toBeGreaterThan(5);
    await soon(() => page.locator('.unsent').textContent()).toMatch(/No signal.*how things stood/);
    await page.click('a[href="#order"]');
    await soon(() => page.locator('.order .item').count()).toBeGreaterThan(2);
    await page.click('a[href="#trip"]');
    await soon(() => page.locator('.trip .plain-list li').count()).toBeGreaterThan(2);
    await page.click('a[href="#day"]');
    await page.getByText('The e-mail is written by the server, which does not answer now.').waitFor();
    await page.click('a[href="#setup"]');
    await page.getByRole('button', { name: 'Keep' }).first().click();
    await soon(() => page.locator('[role=status]').textContent()).toMatch(/Not kept\. The server does not answer/);
  });
});

it('tells on its day what a thumb ticked, without signal too, and no more once it is taken back', async () => {
  await openScreen('list');
  const done = page.locator('.day section', { has: page.getByRole('heading', { name: 'Done', exact: true }) });
  await house.away();
  await page.locator('.item', { hasText: 'shutoff valve' }).locator('.tick').click();
  await page.click('a[href="#day"]');
  await soon(() => done.getByText('shutoff valve, seized, fixed').count()).toBe(1);
  await house.back();
  await page.evaluate(() => dispatchEvent(new Event('online')));
  await soon(unsent).toBe('0');
  expect(await done.textContent()).toContain('shutoff valve, seized, fixed');
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await soon(() => done.getByText('shutoff valve, seized, fixed').count()).toBe(0);
});

it('works by keyboard alone: from screen to screen, a tick, and its undo', async () => {
  await page.goto(`${house.url}/#list`);
  const tick = page.locator('.list .tick').first();
  await tick.waitFor();
  await tick.focus();
  await page.keyboard.press('Space');
  await page.getByRole('button', { name: 'Undo' }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await soon(() => page.locator('[role=status]').textContent()).toBe('Taken back.');
  await page.locator('a[href="#order"]').press('Enter');
  await page.waitForSelector('.order');
  // What has the focus is marked for the eye.
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => getComputedStyle(document.activeElement!).outlineWidth)).toBe('3px');
});

it('shares the order as text, by the counter that sells it', async () => {
  await context.addInitScript(() => {
    Object.defineProperty(navigator, 'share', {
      value: async (given: ShareData) => Object.assign(globalThis, { given }),
      configurable: true,
    });
  });
  await page.goto(`${house.url}/#order`);
  await page.getByRole('button', { name: 'Share as text' }).click();
  await soon(() => page.evaluate(() => Boolean((globalThis as { given?: ShareData }).given))).toBe(true);
  const { text } = await page.evaluate(() => (globalThis as unknown as { given: { text: string } }).given);
  expect(text).toMatch(new RegExp(`^${JOB.name}\n\nplumbing\n- .*2 supply hoses`, 's'));
  expect(text).toMatch(/hardware\n- 1 box deck screws/);
});

it('moves nothing where less motion is wished for', async () => {
  const motion = async (reducedMotion: 'reduce' | 'no-preference') => {
    await page.emulateMedia({ reducedMotion });
    return page
      .locator('.tick path')
      .first()
      .evaluate((path) => getComputedStyle(path).animationName);
  };
  await page.goto(`${house.url}/#list`);
  await page.getByRole('button', { name: /^Closed/ }).click();
  await page.locator('.tick path').first().waitFor();
  expect(await motion('reduce')).toBe('none');
  expect(await motion('no-preference')).toBe('stroke');
});

it('shows the e-mail readably, by day and by night', async () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await page.goto(`${house.url}/#day`);
    const words = page.frameLocator('.letter iframe').locator('body');
    await words.waitFor();
    const ink = await words.evaluate((body) => getComputedStyle(body).color);
    const ground = await page.locator('.letter iframe').evaluate((frame) => getComputedStyle(frame).backgroundColor);
    expect(contrast(ink, ground)).toBeGreaterThanOrEqual(7);
  }
});

/** WCAG 2.2, contrast ratio: relative luminance of the lighter plus 0.05 over that of the darker plus 0.05. */
function contrast(a: string, b: string): number {
  const light = (rgb: string) => {
    const [red = 0, green = 0, blue = 0] = (rgb.match(/[\d.]+/g) ?? []).map((channel) => {
      const c = Number(channel) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [lighter, darker] = [light(a), light(b)].sort((x, y) => y - x);
  return (lighter! + 0.05) / (darker! + 0.05);
}
