import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect } from 'vitest';
import { type House, JOB, NOW, openBrowser, openHouse, PHONE } from './house.ts';

/** What a test holds in its hand: one browser a file, a context and a page for each test. */
export let browser: Browser;
export let house: House;
export let context: BrowserContext;
export let page: Page;

interface Held extends BrowserContextOptions {
  /** Has the job the notes of its first days? */
  notes?: boolean;
  /** One house for all tests of a file, instead of one for each. */
  oneHouse?: boolean;
}

/**
 * Hands each test of a file or of a group a phone at the job's own hour, which has opened nothing yet. The page itself
 * is kept on it only where `serviceWorkers` are allowed: each phone then loads the page and the reader a second time.
 */
export function holdPhone({ notes = true, oneHouse = false, serviceWorkers = 'block', ...options }: Held = {}): void {
  beforeAll(async () => {
    browser = await openBrowser();
    if (oneHouse) house = await openHouse({ notes });
  });
  afterAll(async () => {
    await browser?.close();
    if (oneHouse) await house?.stop();
  });
  beforeEach(async () => {
    if (!oneHouse) house = await openHouse({ notes });
    context = await browser.newContext({ viewport: PHONE, timezoneId: JOB.zone, serviceWorkers, ...options });
    await context.clock.setFixedTime(NOW);
    // Sooner than the test itself: what was waited for is then named.
    context.setDefaultTimeout(60_000);
    page = await context.newPage();
    return async () => {
      await context.close();
      if (!oneHouse) await house.stop();
    };
  });
}

/** The page closed, and another in its place on the same phone. */
export async function reopened(): Promise<void> {
  await page.close();
  page = await context.newPage();
}

/** The page itself is on the phone, with the reader, and opens without signal from now on. */
export const shellKept = async () => {
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await soon(() => page.evaluate(async () => (await caches.keys()).length)).toBe(1);
};

export async function openScreen(screen: string): Promise<void> {
  await page.goto(`${house.url}/#${screen}`);
  // The form of this job, and not the folded one of another, which is there before the job has come.
  const sign = { talk: '.slip', list: '.item', setup: '.setup > form.area' }[screen] ?? 'main h1';
  await page.waitForSelector(sign, { state: 'attached' });
}

export async function write(text: string): Promise<void> {
  await page.fill('#words', text);
  await page.click('.composer .primary');
}

/** How much is only on this phone, as the page says. */
export const unsent = () => page.locator('.unsent').getAttribute('data-unsent');

export const soon = <T>(look: () => T) => expect.poll(look, { timeout: 30_000 });
