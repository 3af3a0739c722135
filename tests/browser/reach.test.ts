import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gzipSync } from 'node:zlib';
import type { Result } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { unheardText } from '../../server/voice/unheard.ts';
import { type House, JOB, NOW, openBrowser, openHouse, PHONE, TABLET } from './house.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const screens = ['talk', 'list', 'order', 'trip', 'day', 'setup', 'reckon', 'fit'];

let browser: Browser;
let full: House;
let bare: House;

beforeAll(async () => {
  [browser, full, bare] = await Promise.all([openBrowser(), openHouse(), openHouse({ notes: false })]);
  const note = {
    saidAt: '2026-05-13T15:00:00',
    text: unheardText,
    recordingId: '01970000-0000-7000-8000-000000000200',
  };
  await fetch(`${full.url}/api/jobs/${JOB.id}/notes/01970000-0000-7000-8000-000000000199`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(note),
  });
});
afterAll(async () => {
  await browser?.close();
  await Promise.all([full?.stop(), bare?.stop()]);
});

/** One page a house and scheme; a test turns it to the screen that it looks at. */
async function onPhone<T>(house: House, screen: string, look: (page: Page) => Promise<T>, dark = false): Promise<T> {
  const page = await pageOf(house, dark);
  await page.setViewportSize(PHONE);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, screen);
  await page.waitForSelector(screen === 'day' ? '.letter iframe' : `.${screen} h1`, { state: 'attached' });
  return look(page);
}

const pages = new Map<string, Promise<Page>>();

function pageOf(house: House, dark: boolean): Promise<Page> {
  const name = `${house.url} ${dark}`;
  const known = pages.get(name);
  if (known) return known;
  const made = (async () => {
    const context = await browser.newContext({
      timezoneId: JOB.zone,
      colorScheme: dark ? 'dark' : 'light',
      reducedMotion: 'reduce',
      // axe is put into the page from outside, which the page's own policy rightly forbids.
      bypassCSP: true,
    });
    await context.clock.setFixedTime(NOW);
    const page = await context.newPage();
    await page.goto(house.url);
    await page.waitForLoadState('networkidle');
    return page;
  })();
  pages.set(name, made);
  return made;
}

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(async () => {
    const { axe: tool } = globalThis as unknown as { axe: typeof import('axe-core') };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await tool.run(document, {
      runOnly: tags,
      rules: { 'color-contrast-enhanced': { enabled: true } },
      iframes: false,
    });
    return violations;
  });
  return found.map((v: Result) => `${v.id} (${v.impact}): ${v.nodes.map((n) => n.html.slice(0, 90)).join(' | ')}`);
}

/** What is left of a screen at 200 % zoom. */
const half = ({ width, height }: { width: number; height: number }) => ({ width: width / 2, height: height / 2 });

describe.each(screens)('%s', (screen) => {
  it.each([
    ['light', false],
    ['dark', true],
  ])('has no fault that axe finds, contrast of 7:1 included, in %s', async (_name, dark) => {
    expect(await onPhone(full, screen, faults, dark)).toEqual([]);
    const onTablet = async (page: Page) => {
      await page.setViewportSize(TABLET);
      return faults(page);
    };
    expect(await onPhone(full, screen, onTablet, dark)).toEqual([]);
    expect(await onPhone(bare, screen, faults, dark)).toEqual([]);
  });

  it('fits phone and tablet, and both at 200 % zoom, without sideways scrolling, empty or full', async () => {
    for (const house of [full, bare])
      await onPhone(house, screen, async (page) => {
        for (const { width, height } of [PHONE, half(PHONE), TABLET, half(TABLET)]) {
          await page.setViewportSize({ width, height });
          const wide = await page.evaluate(() => [
            document.documentElement.scrollWidth,
            document.querySelector('main')!.scrollWidth,
          ]);
          expect(Math.max(...wide)).toBeLessThanOrEqual(width);
        }
      });
  });

  it('breaks no everyday word at 200 % zoom', async () => {
    const broken = await onPhone(full, screen, async (page) => {
      await page.setViewportSize(half(PHONE));
      return page.evaluate(() => {
        const out = new Set<string>();
        const texts = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
        for (let text = texts.nextNode() as Text; text; text = texts.nextNode() as Text) {
          if (!text.parentElement!.checkVisibility() || text.parentElement!.closest('.hidden, svg, option')) continue;
          for (const { 0: word, index } of text.data.matchAll(/(?<![\w@./])[a-z]{2,12}(?![\w@/]|\.\w)/gi)) {
            const range = new Range();
            range.setStart(text, index);
            range.setEnd(text, index + word.length);
            const bottoms = [...range.getClientRects()].flatMap(({ width, bottom }) => (width ? bottom : []));
            // A first letter that is styled has a box of its own on the same line.
            if (Math.max(...bottoms) - Math.min(...bottoms) > 10) out.add(word);
          }
        }
        return [...out];
      });
    });
    expect(broken).toEqual([]);
  });

  it('has nothing to tap that is under 48 px', async () => {
    const small = await onPhone(full, screen, (page) =>
      page.evaluate(() =>
        [
          ...document.querySelectorAll(
            'button, a, select, summary, textarea, label:has(input[type=checkbox]), input:not([type=checkbox], [type=file])',
          ),
        ]
          .map((el) => ({ name: el.outerHTML.slice(0, 80), box: el.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 47.5 || box.width < 44))
          .map(({ name, box }) => `${name} ${box.width}x${box.height}`),
      ),
    );
    expect(small).toEqual([]);
  });
});

it('has main buttons of 60 px within the thumb’s arc', async () => {
  const box = await onPhone(full, 'talk', (page) => page.locator('.composer .primary').boundingBox());
  expect(box!.height).toBeGreaterThanOrEqual(60);
  expect(box!.y).toBeGreaterThan(PHONE.height * 0.6);
});

it('is read in the sun where that was chosen, on a phone that is set dark: no fault that axe finds, black on white', async () => {
  for (const screen of screens)
    await onPhone(
      full,
      screen,
      async (page) => {
        await page.evaluate(() => document.documentElement.classList.add('sun'));
        const { ink, ground } = await page.evaluate(() => {
          const { color, backgroundColor } = getComputedStyle(document.documentElement);
          return { ink: color, ground: backgroundColor };
        });
        expect([ink, ground]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
        expect(await faults(page)).toEqual([]);
        await page.evaluate(() => document.documentElement.classList.remove('sun'));
      },
      true,
    );
});

it('leaves room to speak on the smallest phone, however much went wrong', async () => {
  await onPhone(full, 'talk', async (page) => {
    await page.setViewportSize({ width: 320, height: 568 });
    await page.route('**/notes/*', (route) =>
      route.fulfill({ status: 413, json: { code: 'note-too-long', message: 'Too long. '.repeat(30), retry: false } }),
    );
    await page.fill('#words', 'Need one roll of screen.');
    await page.click('.composer .primary');
    await page.waitForSelector('.parked');
    await page.getByRole('button', { name: 'Record', exact: true }).click();
    await page.getByRole('button', { name: 'Drop it' }).waitFor();
    for (const part of ['.composer .primary', '.recording', '.at-work .warn', '#words']) {
      const whole = await page.locator(part).evaluate((el) => {
        const { left, top, right, bottom } = el.getBoundingClientRect();
        return [
          [left, top],
          [right, bottom],
        ].every(([x, y], k) => el.contains(document.elementFromPoint(x! + (k ? -4 : 4), y! + (k ? -4 : 4))));
      });
      expect([part, whole]).toEqual([part, true]);
    }
    await page.getByRole('button', { name: 'Drop it' }).click();
    await page.getByRole('button', { name: 'Record', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Throw away' }).click();
    await page.unroute('**/notes/*');
  });
});

it('has no fault that axe finds where there is no signal and something waits', async () => {
  await onPhone(bare, 'talk', async (page) => {
    await page.route('**/api/**', (route) => route.abort());
    await page.fill('#words', 'Need one roll of screen.');
    await page.click('.composer .primary');
    await page.locator('.unsent', { hasText: '1 not sent' }).waitFor();
    expect(await faults(page)).toEqual([]);
    await page.getByRole('button', { name: /^Take out/ }).click();
    await page.unroute('**/api/**');
  });
});

it('opens a sheet that axe finds no fault in, and gives the focus back', async () => {
  await onPhone(full, 'list', async (page) => {
    await page.locator('.task').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('dialog[open]');
    expect(await faults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('task');
  });
});

it.each([
  ['a fact', 'talk', '.fact'],
  ['a word', 'setup', '.words-taught + button'],
  ['a recording to type', 'talk', '.unheard'],
  ['going through aloud', 'list', '.list > .row button'],
])('opens the sheet of %s, light and dark, without a fault that axe finds', async (_what, screen, opener) => {
  for (const dark of [false, true])
    await onPhone(
      full,
      screen,
      async (page) => {
        await page.locator(opener).first().click();
        await page.waitForSelector('dialog[open]');
        expect(await faults(page)).toEqual([]);
        await page.keyboard.press('Escape');
        await page.waitForSelector('dialog', { state: 'detached' });
      },
      dark,
    );
});

it('tells its pictures in words', async () => {
  await onPhone(full, 'trip', async (page) => {
    const week = await page.locator('.week svg').getAttribute('aria-label');
    expect(week).toMatch(/Thu May 14, no\. 5 .*lay .*vinyl plank/);
  });
  await onPhone(full, 'day', async (page) => {
    const soFar = await page.locator('.so-far svg').getAttribute('aria-label');
    expect(soFar).toMatch(/Mon May 11: \d+ new, \d+ done, \d+ left/);
    expect(await page.locator('.day .progress svg').first().getAttribute('aria-label')).toMatch(/^\d+ of \d+ done$/);
  });
});

it('loads under 200 KB compressed before the vocabulary, from its own host alone', async () => {
  const sizes: number[] = [];
  const hosts = new Set<string>();
  await onPhone(bare, 'talk', async (page) => {
    page.on('request', (request) => hosts.add(new URL(request.url()).host));
    page.on('response', async (answer) => {
      if (!answer.url().includes('/api/')) sizes.push(gzipSync(await answer.body()).length);
    });
    await page.reload();
    await page.waitForLoadState('networkidle');
  });
  expect([...hosts]).toEqual([new URL(bare.url).host]);
  expect(sizes.length).toBeGreaterThanOrEqual(3);
  expect(sizes.reduce((a, b) => a + b, 0)).toBeLessThan(200_000);
});
