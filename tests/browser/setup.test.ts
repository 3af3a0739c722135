import { describe, expect, it } from 'vitest';
import { JOB } from './house.ts';
import { holdPhone, house, openScreen, page, soon, write } from './phone.ts';

holdPhone();

const undo = () => page.getByRole('button', { name: 'Undo' }).click();
const status = () => page.locator('.status p').textContent();
const names = async () => (await house.store.words()).map((word) => word.name);
const teach = async (name: string, also: string) => {
  await page.getByRole('button', { name: 'Teach a word' }).click();
  await page.fill('dialog [name=name]', name);
  await page.fill('dialog [name=also]', also);
  await page.click('dialog [type=submit]');
};
const taught = async (name: string, also: string) => {
  await teach(name, also);
  await page.waitForSelector('dialog', { state: 'detached' });
};

describe('a change in set-up is taken back by a tap', () => {
  it('of the job’s particulars, and the fields show it', async () => {
    await openScreen('setup');
    const areas = page.locator('form.area [name=areas]').first();
    await areas.fill('attic');
    await page.locator('form.area .primary').first().click();
    await soon(status).toBe('Job kept.');
    expect((await house.store.job(JOB.id))?.areas).toEqual(['attic']);
    await undo();
    await soon(status).toBe('The job stands as before.');
    expect(await house.store.job(JOB.id)).toMatchObject(JOB);
    await soon(() => areas.inputValue()).toBe(JOB.areas.join('\n'));
  });

  it('of a word that was taught, and of one that was forgotten', async () => {
    await openScreen('setup');
    await taught('zip panel', 'green stuff');
    await undo();
    await soon(names).toEqual([]);
    await undo();
    await soon(names).toEqual(['zip panel']);
    await page.getByRole('button', { name: 'zip panel' }).click();
    await page.fill('dialog [name=name]', 'zip board');
    await page.click('dialog [type=submit]');
    await page.waitForSelector('dialog', { state: 'detached' });
    await undo();
    await soon(async () => (await house.store.words()).map(({ name, also }) => [name, also])).toEqual([
      ['zip panel', ['green stuff']],
    ]);
  });

  it('and says so where the server does not answer, to be tapped again', async () => {
    await openScreen('setup');
    await taught('zip panel', 'green stuff');
    await house.away();
    await undo();
    await soon(status).toMatch(/^Not taken back\. The server does not answer/);
    await house.back();
    await undo();
    await soon(names).toEqual([]);
  });
});

it('a note that the server refused and a hand threw away comes back by a tap', async () => {
  await page.route('**/notes/*', (route) =>
    route.fulfill({ status: 413, json: { code: 'note-too-long', message: 'Too long.', retry: false } }),
  );
  await openScreen('setup');
  await page.click('a[href="#talk"]');
  await write('Need one roll of screen.');
  await page.getByRole('button', { name: 'Throw away' }).click();
  await soon(() => page.locator('.parked').count()).toBe(0);
  await undo();
  await soon(() => page.locator('.parked').textContent()).toContain('one roll of screen');
  await page.unroute('**/notes/*');
  await page.getByRole('button', { name: 'Try again' }).click();
  await soon(async () => (await house.store.notes(JOB.id)).at(-1)?.text).toBe('Need one roll of screen.');
});

describe('without signal set-up', () => {
  it('says in the sheet itself that a word was not kept', async () => {
    await openScreen('setup');
    await house.away();
    await teach('zip panel', '');
    await page.locator('dialog [role=alert]', { hasText: 'Not kept. The server does not answer' }).waitFor();
    expect(await page.inputValue('dialog [name=name]')).toBe('zip panel');
  });

  it('does not claim that there is no price list', async () => {
    await page.route('**/api/catalogue', (route) => route.abort());
    await openScreen('setup');
    await page.getByText('kept by the server, which does not answer').waitFor();
  });
});

describe('reading the notes again', () => {
  it('shows what would change, changes it at a second tap, in the talk too', async () => {
    await openScreen('talk');
    await write('Need 2 sheets of the green stuff.');
    const slip = page.locator('.slip', { hasText: 'green stuff' });
    await slip.locator('.reply').waitFor();
    await page.click('a[href="#setup"]');
    await taught('zip panel', 'green stuff');
    await page.getByRole('button', { name: 'See what would change' }).click();
    await page.locator('.difference .comes', { hasText: /2 sheets? zip panel/ }).waitFor();
    expect((await house.store.entries(JOB.id)).some((e) => e.what.kind === 'noteRead' && e.what.places)).toBe(false);
    await page.getByRole('button', { name: 'Change it so' }).click();
    await soon(status).toBe('The notes were read again.');
    await page.click('a[href="#order"]');
    await page.locator('.item', { hasText: 'zip panel' }).waitFor();
    await page.click('a[href="#talk"]');
    await slip.locator('.fact', { hasText: 'zip panel' }).waitFor();
  });

  it('is taken back by a tap, and brought again by another', async () => {
    await openScreen('talk');
    await write('Need 2 sheets of the green stuff.');
    const slip = page.locator('.slip', { hasText: 'green stuff' });
    await slip.locator('.reply').waitFor();
    await page.click('a[href="#setup"]');
    await taught('zip panel', 'green stuff');
    await page.getByRole('button', { name: 'See what would change' }).click();
    await page.getByRole('button', { name: 'Change it so' }).click();
    await soon(status).toBe('The notes were read again.');
    await undo();
    await soon(status).toBe('The notes stand as before.');
    await page.click('a[href="#talk"]');
    await soon(() => slip.locator('.fact', { hasText: 'zip panel' }).count()).toBe(0);
    await undo();
    await slip.locator('.fact', { hasText: 'zip panel' }).waitFor();
  });

  it('says when nothing would change, and when the server does not answer', async () => {
    await openScreen('setup');
    await page.getByRole('button', { name: 'See what would change' }).click();
    await page.getByText('Nothing would change').waitFor();
    await house.away();
    await page.getByRole('button', { name: 'See what would change' }).click();
    await page.getByText('Not read again. The server does not answer').waitFor();
  });
});
