import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { JobView } from '../../server/http/api.ts';
import { type House, JOB, openBrowser, openHouse, PHONE } from './house.ts';
import { soon } from './phone.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const unsent = (page: Page) => page.locator('.unsent').getAttribute('data-unsent');
const online = (page: Page) => page.evaluate(() => dispatchEvent(new Event('online')));

describe('two phones on one job', () => {
  let house: House;
  let contexts: BrowserContext[];
  let dana: Page;
  let luis: Page;

  beforeEach(async () => {
    house = await openHouse();
    contexts = [];
    const phone = async (clock: string) => {
      const context = await browser.newContext({ viewport: PHONE, timezoneId: JOB.zone, serviceWorkers: 'block' });
      contexts.push(context);
      await context.clock.setFixedTime(new Date(clock));
      const page = await context.newPage();
      await page.goto(`${house.url}/#list`);
      await page.waitForSelector('.item');
      return page;
    };
    // Luis's hand is a minute later than Dana's.
    [dana, luis] = await Promise.all([phone('2026-05-13T20:30:00Z'), phone('2026-05-13T20:31:00Z')]);
    await house.away();
  });
  afterEach(async () => {
    await Promise.all(contexts.map((c) => c.close()));
    await house.stop();
  });

  const valve = (page: Page) => page.locator('.item', { hasText: 'shutoff valve' });
  const valveKept = async () => {
    const view = (await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json()) as JobView;
    return view.state.items.find((i) => i.task.includes('shutoff valve'))!;
  };
  /** Nothing waits on a phone before its thumb is heard, either: the server tells when it has come in. */
  const heard = async (page: Page, state: string) => {
    await soon(async () => (await valveKept()).state).toBe(state);
    await soon(() => unsent(page)).toBe('0');
  };
  const edit = async (page: Page, fields: Record<string, string>) => {
    await valve(page).locator('.task').click();
    for (const [name, value] of Object.entries(fields)) await page.fill(`dialog [name=${name}]`, value);
    await page.click('dialog [type=submit]');
  };
  const say = async (page: Page, text: string) => {
    await page.click('a[href="#talk"]');
    await page.fill('#words', text);
    await page.click('.composer .primary');
  };
  /** Both come back into signal, one after the other, then each looks once more. */
  const meet = async (first: Page, second: Page) => {
    await house.back();
    for (const page of [first, second]) {
      await online(page);
      await soon(() => unsent(page)).toBe('0');
    }
    await Promise.all([online(first), online(second)]);
  };
  const list = (page: Page) => page.locator('.item').allTextContents();
  const same = async () => {
    for (const page of [dana, luis]) {
      await page.click('a[href="#list"]');
      await page.getByRole('button', { name: /^Left/ }).click();
    }
    await soon(async () => JSON.stringify(await list(dana)) === JSON.stringify(await list(luis))).toBe(true);
    return list(dana);
  };

  it.each(['Dana', 'Luis'])('end with the later hand on the same item, whoever gets signal first: %s', async (who) => {
    await edit(dana, { area: 'hall', who: 'Dana' });
    await edit(luis, { area: 'back porch', due: '2026-05-20' });
    await (who === 'Dana' ? meet(dana, luis) : meet(luis, dana));
    await same();
    const item = await valveKept();
    // What only one of them touched stays; where both did, the later one stands.
    expect(item).toMatchObject({ area: 'back porch', who: 'Dana', due: '2026-05-20' });
    expect(item.history.filter((h) => h.noteId === null)).toHaveLength(2);
    expect(await valve(dana).textContent()).toContain('Dana');
  });

  it('tick the same item both, once, and either may open it again', async () => {
    for (const page of [dana, luis]) await valve(page).locator('.tick').click();
    await meet(luis, dana);
    expect((await same()).join()).not.toContain('shutoff valve');
    await dana.getByRole('button', { name: /^Closed/ }).click();
    expect(await valve(dana).count()).toBe(1);
    await contexts[0]!.clock.setFixedTime(new Date('2026-05-13T20:33:00Z'));
    await valve(dana).locator('.tick').click();
    await heard(dana, 'open');
    await online(luis);
    expect((await same()).join()).toContain('shutoff valve');
  });

  it('done on one and dropped on the other ends the same on both, and the list says who did what', async () => {
    await valve(dana).locator('.tick').click();
    await valve(luis).locator('.task').click();
    await luis.getByRole('button', { name: 'Drop it' }).click();
    await meet(dana, luis);
    await same();
    for (const page of [dana, luis]) {
      await page.getByRole('button', { name: /^Closed/ }).click();
      expect(await valve(page).locator('.task-notes i').textContent()).toBe('dropped');
    }
  });

  it.each(['Dana', 'Luis'])(
    'done on one and edited on the other is both, whoever gets signal first: %s',
    async (who) => {
      await valve(dana).locator('.tick').click();
      await edit(luis, { who: 'Luis', area: 'hall' });
      await (who === 'Dana' ? meet(dana, luis) : meet(luis, dana));
      await same();
      for (const page of [dana, luis]) {
        await page.getByRole('button', { name: /^Closed/ }).click();
        await soon(() => valve(page).textContent()).toContain('Luis');
        expect(
          await page
            .locator('.area', { has: valve(page) })
            .locator('h2')
            .textContent(),
        ).toBe('hall');
      }
    },
  );

  it.each(['Dana', 'Luis'])(
    'opened again on one and signed off later on the other ends signed off: %s',
    async (who) => {
      await house.back();
      await valve(dana).locator('.tick').click();
      await heard(dana, 'done');
      await online(luis);
      for (const page of [dana, luis]) {
        await page.getByRole('button', { name: /^Closed/ }).click();
        await valve(page).waitFor();
      }
      await house.away();
      await valve(dana).locator('.tick').click();
      await valve(luis).locator('.task').click();
      await luis.getByRole('button', { name: 'Sign off' }).click();
      await (who === 'Dana' ? meet(dana, luis) : meet(luis, dana));
      await same();
      for (const page of [dana, luis]) {
        await page.getByRole('button', { name: /^Closed/ }).click();
        await soon(() => valve(page).locator('.task-notes i').textContent()).toBe('signed off');
      }
    },
  );

  it('an order line bought on one and there already on the other ends as the later hand left it, on both', async () => {
    for (const page of [dana, luis]) await page.click('a[href="#order"]');
    const screws = (page: Page) => page.locator('.item', { hasText: 'deck screws' });
    await screws(dana).locator('.t-bought').click();
    await screws(luis).locator('.t-have').click();
    await meet(dana, luis);
    for (const page of [dana, luis])
      await soon(() => screws(page).locator('.t-have').getAttribute('aria-pressed')).toBe('true');
  });

  it('keep everybody’s words, said at the same moment of the same thing', async () => {
    await say(dana, 'Rail post is loose, fix it tomorrow.');
    await say(luis, 'Rail post is loose and split, need one post bracket.');
    await meet(dana, luis);
    for (const page of [dana, luis]) {
      await page.click('a[href="#talk"]');
      await page.locator('.slip', { hasText: 'fix it tomorrow' }).waitFor();
      await page.locator('.slip', { hasText: 'loose and split' }).waitFor();
    }
    expect((await house.store.notes(JOB.id)).length).toBe(7);
    expect((await same()).length).toBeGreaterThan(0);
  });
});

describe('a server that is killed', () => {
  it('in the middle of a request has each note once when it is back', async () => {
    const data = mkdtempSync(join(tmpdir(), 'killed-test-'));
    let port = '0';
    const start = () =>
      new Promise<ChildProcess>((resolve, reject) => {
        const server = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
          env: { ...process.env, PORT: port, DATA: data },
        });
        let said = '';
        server.stdout.on('data', (words: Buffer) => {
          said += words;
          const found = /http:\/\/127\.0\.0\.1:(\d+)/.exec(said);
          if (found) {
            port = found[1]!;
            resolve(server);
          }
        });
        server.once('exit', () => reject(new Error(said)));
      });
    let server = await start();
    const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.goto(`http://127.0.0.1:${port}`);
    await page.waitForSelector('.slip');
    const killAfter = [0, 8];
    for (const [k, wait] of killAfter.entries()) {
      const gone = new Promise((resolve) => server.removeAllListeners('exit').once('exit', resolve));
      page.once('request', () => setTimeout(() => server.kill('SIGKILL'), wait));
      await page.fill('#words', `Need ${k + 2} rolls of housewrap tape, round ${k}.`);
      await page.click('.composer .primary');
      await gone;
      server = await start();
      await online(page);
      await soon(() => unsent(page)).toBe('0');
    }
    const [job] = await (await fetch(`http://127.0.0.1:${port}/api/jobs`)).json();
    const notes: { text: string }[] = await (await fetch(`http://127.0.0.1:${port}/api/jobs/${job.id}/notes`)).json();
    for (const k of killAfter.keys()) expect(notes.filter((n) => n.text.endsWith(`round ${k}.`))).toHaveLength(1);
    await context.close();
    server.removeAllListeners('exit').kill('SIGKILL');
    rmSync(data, { recursive: true, force: true });
    // Three starts of the whole server, on a machine that may have other work.
  }, 240_000);
});
