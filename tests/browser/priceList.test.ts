import { expect, it } from 'vitest';
import { holdPhone, openScreen, page, reopened } from './phone.ts';

holdPhone();

const send = (text: string) =>
  page.setInputFiles('input[type=file][accept*=csv]', {
    name: 'list.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(text),
  });

it('a price list sent in Set-up prices the order; a wrong one says which line and changes nothing', async () => {
  await openScreen('setup');
  await send('item,size,unit,price,supplier\ndeck screws,,box,12.40,Ridge Lumber\n');
  await page.getByText('1 line from Ridge Lumber.').waitFor();
  await send('item,price,supplier\ndeck screws,cheap,Ridge Lumber\n');
  await page.getByRole('alert').filter({ hasText: 'line 2: the price "cheap"' }).waitFor();
  expect(await page.getByText('1 line from Ridge Lumber.').count()).toBe(1);
  await page.reload();
  await openScreen('order');
  await page.getByText('Cost by your price list').waitFor();
  expect(await page.locator('.order').textContent()).toContain('12.40');
});

it('a price list put in the place of another, or taken away, comes back by a tap', async () => {
  await openScreen('setup');
  const stands = (words: string) => page.getByText(words).waitFor();
  const undo = () => page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('None yet. With one').waitFor();
  await send('item,price,supplier\ndeck screws,12.40,Ridge Lumber\n');
  await stands('1 line from Ridge Lumber.');
  await send('item,price,supplier\ndeck screws,11,Mill Yard\ncaulk,6,Mill Yard\n');
  await stands('2 lines from Mill Yard.');
  await undo();
  await stands('1 line from Ridge Lumber.');
  await undo();
  await stands('2 lines from Mill Yard.');
  await page.getByRole('button', { name: 'Do without it' }).click();
  await page.getByText('None yet. With one').waitFor();
  await undo();
  await stands('2 lines from Mill Yard.');
});

it('the price list from before is a tap away on another day too', async () => {
  await openScreen('setup');
  await send('item,price,supplier\ndeck screws,12.40,Ridge Lumber\n');
  await page.getByText('1 line from Ridge Lumber.').waitFor();
  await send('item,price,supplier\ndeck screws,11,Mill Yard\ncaulk,6,Mill Yard\n');
  await page.getByText('2 lines from Mill Yard.').waitFor();
  await reopened();
  await openScreen('setup');
  await page.getByRole('button', { name: 'Put back the one before: 1 line from Ridge Lumber' }).click();
  await page.getByText('1 line from Ridge Lumber.').waitFor();
  await page.getByRole('button', { name: 'Put back the one before: 2 lines from Mill Yard' }).waitFor();
});

it('going back names the tools and small parts with the items that call for them', async () => {
  await openScreen('trip');
  const tools = page.locator('section', { has: page.getByRole('heading', { name: 'Tools' }) });
  await tools.waitFor();
  expect(await tools.locator('li').first().textContent()).toMatch(/No\. \d/);
});
