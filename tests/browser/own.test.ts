import { describe, expect, it } from 'vitest';
import { JOB } from './house.ts';
import { holdPhone, house, openScreen, page, soon, write } from './phone.ts';

holdPhone();

const told = async (text: string) => {
  await write(text);
  await page.locator('.slip', { hasText: text }).locator('.reply li').first().waitFor();
};
const lastEntry = async () => (await house.store.entries(JOB.id)).at(-1)?.what;

describe('set-up', () => {
  it('names the crew, who can then be given work', async () => {
    await openScreen('setup');
    await page.locator('form.area [name=crew]').first().fill('Marisol Vega\nTheo');
    await page.locator('form.area .primary').first().click();
    await soon(() => page.locator('[role=status]').textContent()).toBe('Job kept.');
    await page.click('a[href="#talk"]');
    await told('Marisol will caulk the porch window tomorrow.');
    await page.click('a[href="#list"]');
    expect(await page.locator('.item', { hasText: 'caulk porch window' }).textContent()).toContain('Marisol Vega');
  });

  it('says whose notes this phone writes', async () => {
    await openScreen('setup');
    await page.locator('[list=crew]').fill('Theo');
    await page.locator('[list=crew]').blur();
    await page.click('a[href="#talk"]');
    await told('Need one roll of screen.');
    expect((await house.store.notes(JOB.id)).at(-1)?.by).toBe('Theo');
  });

  it('teaches a word, changes it and forgets it', async () => {
    await openScreen('setup');
    await page.getByRole('button', { name: 'Teach a word' }).click();
    await page.fill('dialog [name=name]', 'zip panel');
    await page.fill('dialog [name=also]', 'green stuff');
    await page.fill('dialog [name=counter]', 'lumber');
    await page.fill('dialog [name=holds]', 'plenty');
    await page.click('dialog [type=submit]');
    await page.locator('dialog [role=alert]', { hasText: 'write what one holds' }).waitFor();
    await page.fill('dialog [name=soldBy]', 'box');
    await page.fill('dialog [name=holds]', '25');
    await page.click('dialog [type=submit]');
    await page.getByRole('button', { name: /^zip panel.*25 a box/ }).waitFor();
    await page.click('a[href="#talk"]');
    await told('Need 2 sheets of the green stuff.');
    await page.click('a[href="#order"]');
    const lumber = page.locator('.area', { has: page.locator('h2', { hasText: /^lumber$/i }) });
    await lumber.locator('.item', { hasText: 'zip panel' }).waitFor();
    await page.click('a[href="#setup"]');
    await page.getByRole('button', { name: 'zip panel' }).click();
    await page.getByRole('button', { name: 'Forget it' }).click();
    await soon(() => page.getByRole('button', { name: 'zip panel' }).count()).toBe(0);
  });
});

describe('the chosen area', () => {
  it('travels beside the words, which stay as they were said', async () => {
    await openScreen('talk');
    await page.selectOption('.area-pick select', 'back porch');
    await told('The light is flickering.');
    expect((await house.store.notes(JOB.id)).at(-1)).toMatchObject({
      text: 'The light is flickering.',
      area: 'back porch',
    });
    expect(await page.locator('.slip', { hasText: 'flickering' }).locator('.stood').textContent()).toBe(
      'In: back porch',
    );
    await page.click('a[href="#list"]');
    const porch = page.locator('.area', { has: page.locator('h2', { hasText: /^back porch$/i }) });
    await porch.locator('.item', { hasText: 'flickering' }).waitFor();
  });
});

describe('put it right', () => {
  it('offers a corrected word that nobody knows for teaching, and reads it from then on', async () => {
    await openScreen('talk');
    await told('Need 3 rolls of zipfelt.');
    await page.locator('.fact', { hasText: 'zipfelt' }).click();
    await page.fill('dialog [name=item]', 'flashing tape');
    await page.click('dialog [type=submit]');
    await page.getByRole('button', { name: 'Teach “zipfelt”' }).click();
    expect(await page.inputValue('dialog [name=name]')).toBe('flashing tape');
    expect(await page.inputValue('dialog [name=also]')).toBe('zipfelt');
    await page.click('dialog [type=submit]');
    await soon(async () => (await house.store.words()).map((w) => w.name)).toEqual(['flashing tape']);
    await page.waitForSelector('dialog', { state: 'detached' });
    await page.fill('#words', 'Need one more roll of zipfelt.');
    await page.click('.composer .primary');
    await page.locator('.slip', { hasText: 'one more roll' }).locator('.fact', { hasText: 'flashing tape' }).waitFor();
  });

  it('does not offer a word of the trade', async () => {
    await openScreen('talk');
    await told('Need 3 tubes of caulk.');
    await page.locator('.fact', { hasText: 'caulk' }).last().click();
    await page.fill('dialog [name=item]', 'silicone');
    await page.click('dialog [type=submit]');
    await soon(lastEntry).toMatchObject({ kind: 'correctFact' });
    // The reader has been asked and has answered once it has read the next note too.
    await house.away();
    await page.fill('#words', 'Need one box of nails.');
    await page.click('.composer .primary');
    await page
      .locator('.slip', { has: page.locator('.not-sent') })
      .locator('.fact')
      .waitFor();
    expect(await page.getByRole('button', { name: /^Teach/ }).count()).toBe(0);
  });

  it.each([
    ['unit and number', 'deck screw', { amount: '4', unit: 'pack' }, { exact: '4', unit: 'pack' }],
    [
      'thing, status and room',
      'deck screw',
      { item: 'coated screws', status: 'have', area: 'hall' },
      { item: 'coated screws', status: 'have', area: 'hall' },
    ],
    ['a size into one to cut to', 'gap', { role: 'wanted', amount: '1 1/2' }, { exact: '3/2', role: 'wanted' }],
    ['a day', 'call plumber', { due: '2026-05-20' }, { due: '2026-05-20' }],
    ['a problem into one that is fixed', 'rail post', { state: 'fixed' }, { state: 'fixed' }],
  ] as [string, string, Record<string, string>, object][])('changes %s', async (_what, said, typed, put) => {
    await openScreen('talk');
    await page.locator('.fact', { hasText: said }).first().click();
    for (const [name, value] of Object.entries(typed)) {
      const field = page.locator(`dialog [name=${name}]`);
      if (await field.evaluate((el) => el.tagName === 'SELECT')) await field.selectOption(value);
      else await field.fill(value);
    }
    await page.click('dialog [type=submit]');
    await soon(lastEntry).toMatchObject({ kind: 'correctFact', fact: put });
  });

  it('joins an item to another from the fact that opened it, and undo parts them', async () => {
    await openScreen('talk');
    const items = async () => {
      const view = await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json();
      return view.state.items.map((i: { number: number }) => i.number) as number[];
    };
    const before = await items();
    await page.locator('.fact', { hasText: 'rail post' }).click();
    const other = page.locator('dialog [name=as] option', { hasText: 'shutoff valve' });
    await page.selectOption('dialog [name=as]', (await other.getAttribute('value'))!);
    await page.click('dialog [type=submit]');
    await soon(async () => (await items()).length).toBe(before.length - 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(items).toEqual(before);
  });
});
