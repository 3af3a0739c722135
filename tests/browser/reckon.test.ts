import { expect, it } from 'vitest';
import { holdPhone, house, openScreen, page, soon } from './phone.ts';

holdPhone({ oneHouse: true });

const fill = async (fields: Record<string, string>) => {
  for (const [name, text] of Object.entries(fields)) await page.fill(`[name="${name}"]`, text);
  await page.click('.reckoning .primary');
};
const answer = () => page.locator('.reckoning + div').textContent();

it('works out from the order how much to buy, and puts it there', async () => {
  await openScreen('order');
  await page.getByRole('link', { name: 'Work out how much' }).click();
  await fill({ length: '11 ft 6 in', width: '8', unit: 'box', holds: '11.5', waste: '10' });
  await soon(answer).toContain('9 boxes');
  // 11.5 x 8 = 92, + 10 % = 101.2.
  expect(await answer()).toContain('= 101.2 sq ft');
  await page.fill('[name=goods]', 'quarry tile');
  await page.getByRole('button', { name: 'Put on the order' }).click();
  await page.getByText('Sent.').waitFor();
  await page.getByRole('link', { name: /^Order/ }).click();
  await page.locator('.item', { hasText: 'quarry tile' }).filter({ hasText: '9 boxes' }).waitFor();
});

it('an answer is taken away as soon as a size is changed', async () => {
  await openScreen('reckon');
  await page.selectOption('.asks select', 'spacing');
  await fill({ run: '12 ft 4', spacing: '16' });
  await soon(answer).toContain('11');
  await page.fill('[name=run]', '14');
  expect(await answer()).toBe('');
});

it('checks a fit with figure, limit and source, names what is missing, and refuses what cannot be', async () => {
  await openScreen('trip');
  await page.getByRole('link', { name: 'Does it fit?' }).click();
  const box = { 'cables.0.count': '3', 'cables.0.conductors': '2', devices: '1' };
  await fill(box);
  await soon(answer).toMatch(/cannot say\.\s+Missing: .*stamp/);
  await fill({ volume: '16' });
  await soon(answer).toMatch(/does not fit\.\s+18 cu in against 16 cu in\..*NEC 314\.16/);
  await fill({ volume: '-16' });
  await soon(answer).toContain('must be more than 0');
});

it('needs no signal: the phone works it out itself', async () => {
  await openScreen('reckon');
  await page.selectOption('.asks select', 'cutList');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.route('**/api/**', (route) => route.abort());
  await page.fill('[name="pieces.0.count"]', '6');
  await page.fill('[name="pieces.0.length"]', '31 7/8');
  await page.getByRole('button', { name: 'Another' }).click();
  await fill({ 'pieces.1.count': '4', 'pieces.1.length': '24', stock: '8' });
  await soon(answer).toContain('4 sticks of 8 ft');
  expect(asked.filter((url) => url.includes('/reckon'))).toEqual([]);
});

it('asks the server where the phone has no reader, and says so where neither answers', async () => {
  await page.addInitScript('delete globalThis.Worker');
  await page.goto(`${house.url}/#reckon`);
  await page.selectOption('.asks select', 'spacing');
  await fill({ run: '12 ft 4', spacing: '16' });
  await soon(answer).toContain('11');
  await fill({ run: '12 14', spacing: '16' });
  await soon(answer).toContain('write one length');
  await page.route('**/api/reckon', (route) => route.abort());
  await fill({ run: '12', spacing: '16' });
  await soon(answer).toContain('does not answer');
});
