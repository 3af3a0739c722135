import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type House, JOB, NOW, openBrowser, openHouse, PHONE } from './house.ts';

let browser: Browser;
let house: House;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  house = await openHouse();
  context = await browser.newContext({ viewport: PHONE, timezoneId: JOB.zone });
  await context.clock.setFixedTime(NOW);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
});
afterEach(async () => {
  await context.close();
  await house.stop();
});

const open = async (screen: string) => {
  await page.goto(`${house.url}/#${screen}`);
  await page.waitForSelector('main h1', { state: 'attached' });
};
const send = (text: string) =>
  page.setInputFiles('input[type=file][accept*=csv]', {
    name: 'list.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(text),
  });

it('a price list sent in Set-up prices the order; a wrong one says which line and changes nothing', async () => {
  await open('setup');
  await send('item,size,unit,price,supplier\ndeck screws,,box,12.40,Ridge Lumber\n');
  await page.getByText('1 line from Ridge Lumber.').waitFor();
  await send('item,price,supplier\ndeck screws,cheap,Ridge Lumber\n');
  await page.getByRole('alert').filter({ hasText: 'line 2: the price "cheap"' }).waitFor();
  expect(await page.getByText('1 line from Ridge Lumber.').count()).toBe(1);
  await page.reload();
  await open('order');
  await page.getByText('Cost by your price list').waitFor();
  expect(await page.locator('.order').textContent()).toContain('12.40');
});

it('going back names the tools and small parts with the items that call for them', async () => {
  await open('trip');
  const tools = page.locator('section', { has: page.getByRole('heading', { name: 'Tools' }) });
  await tools.waitFor();
  expect(await tools.locator('li').first().textContent()).toMatch(/No\. \d/);
});
