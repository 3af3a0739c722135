import { describe, expect, it } from 'vitest';
import { holdPhone, house, page } from './phone.ts';

holdPhone({ oneHouse: true });

/** Holds back what the page asks for until it is let go. */
async function held(pattern: string): Promise<() => void> {
  let letGo = () => {};
  const gate = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await page.route(pattern, async (route) => {
    await gate;
    await route.continue();
  });
  return letGo;
}

describe('the first moment', () => {
  it('takes words before the page’s own program has come, and sends them once it has', async () => {
    const go = await held('**/app.js');
    await page.goto(house.url, { waitUntil: 'commit' });
    await page.click('#words');
    await page.$eval('#words', (box) => Object.assign(box, { taken: 'over' }));
    await page.keyboard.type('Need one roll of flashing tape');
    await page.keyboard.press('Enter');
    await page.locator('.composer .primary').click();
    expect(new URL(page.url()).search).toBe('');
    go();
    await page.waitForSelector('.slip');
    expect((await page.inputValue('#words')).trim()).toBe('Need one roll of flashing tape');
    // A keyboard that dictates into the box would lose a box that is drawn anew.
    expect(await page.$eval('#words', (box) => (box as Element & { taken?: string }).taken)).toBe('over');
    await page.click('.composer .primary');
    await page.locator('.slip', { hasText: 'flashing tape' }).waitFor();
    expect(await page.inputValue('#words')).toBe('');
  });

  it('keeps what is said before the server has named the job', async () => {
    const go = await held('**/api/jobs');
    await page.goto(house.url);
    await page.fill('#words', 'Gate latch is bent.');
    await page.click('.composer .primary');
    expect(await page.inputValue('#words')).toBe('Gate latch is bent.');
    go();
    await page.locator('.slip', { hasText: 'Gate latch is bent.' }).waitFor();
  });

  it('keeps box and words where nothing is known and the server swallows every call, and says so', async () => {
    await page.addInitScript(() => {
      const timeout = AbortSignal.timeout.bind(AbortSignal);
      AbortSignal.timeout = () => timeout(1500);
    });
    const go = await held('**/api/**');
    await page.goto(`${house.url}/#list`);
    await page.getByText('Asking the server…').waitFor();
    await page.getByText('No job has been opened on this phone yet').waitFor();
    await page.click('a[href="#talk"]');
    await page.fill('#words', 'Gate latch is bent.');
    await page.click('.composer .primary');
    await page.getByText('Your words stay in the box').waitFor();
    expect(await page.inputValue('#words')).toBe('Gate latch is bent.');
    expect(await page.locator('.unsent').textContent()).toBe('');
    go();
  });

  it('comes drawn as the page draws it itself', async () => {
    await page.route('**/api/**', () => {});
    await page.goto(house.url);
    await page.getByRole('button', { name: 'Record' }).waitFor();
    const markup = await (await fetch(house.url)).text();
    const [drawn, given] = await page.evaluate((html) => {
      // Buttons that only some browsers have are put in by the program.
      const look = (root: Document) =>
        [...root.querySelectorAll('#app *:not(button[aria-pressed])')].map((el) => [
          el.tagName,
          el.className,
          el.children.length ? '' : el.textContent,
          el.getAttribute('href') ?? el.getAttribute('for') ?? el.getAttribute('type') ?? el.id,
        ]);
      return [look(document), look(new DOMParser().parseFromString(html, 'text/html'))];
    }, markup);
    expect(drawn).toEqual(given);
  });
});
