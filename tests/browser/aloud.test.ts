import { beforeEach, describe, expect, it } from 'vitest';
import { JOB } from './house.ts';
import { context, holdPhone, house, page, soon } from './phone.ts';

/** What the page finds in place of the browser's own voice and ear: a test hears the one and speaks to the other. */
interface Stub {
  spoken: string[];
  /** Lines that are still to be spoken. */
  readonly left: number;
  /** Ends the line that is being spoken. */
  hush(): void;
  /** Is it listening now? */
  open: boolean;
  /** What the browser hands over since it began to listen: one result, or several. */
  hear(...words: (string | { transcript: string; confidence: number })[]): void;
  /** It stops by itself, or with a reason not to go on. */
  fall(error?: string): void;
}

holdPhone();

beforeEach(async () => {
  await context.addInitScript(() => {
    type Line = { text: string; onend: (() => void) | null };
    let queue: Line[] = [];
    const stub: Stub = {
      spoken: [],
      open: false,
      get left() {
        return queue.length;
      },
      hush: () => queue.shift()?.onend?.(),
      hear: () => {},
      fall: () => {},
    };
    class SpeechSynthesisUtterance {
      onend: (() => void) | null = null;
      constructor(readonly text: string) {}
    }
    const speechSynthesis = {
      cancel: () => {
        queue = [];
      },
      speak: (line: Line) => {
        stub.spoken.push(line.text);
        queue.push(line);
      },
    };
    class SpeechRecognition {
      onresult: ((event: { results: object[][] }) => void) | null = null;
      onerror: ((event: { error: string }) => void) | null = null;
      onend: (() => void) | null = null;
      start() {
        if (stub.open) throw new Error('listening already');
        stub.open = true;
        stub.hear = (...heard) =>
          this.onresult?.({
            results: heard.map((one) => [typeof one === 'string' ? { transcript: one, confidence: 0.9 } : one]),
          });
        stub.fall = (error) => {
          stub.open = false;
          if (error) this.onerror?.({ error });
          this.onend?.();
        };
      }
      stop() {
        stub.open = false;
        this.onend?.();
      }
    }
    Object.assign(globalThis, { stub });
    for (const [name, value] of Object.entries({ SpeechSynthesisUtterance, speechSynthesis, SpeechRecognition }))
      Object.defineProperty(globalThis, name, { value, configurable: true });
  });
});

const stub = <T>(ask: (stub: Stub) => T) => page.evaluate(`(${ask.toString()})(stub)`) as Promise<T>;
const states = async () => {
  const view = await (await fetch(`${house.url}/api/jobs/${JOB.id}`)).json();
  return Object.fromEntries(view.state.items.map((i: { number: number; state: string }) => [i.number, i.state]));
};

it('goes through the list by ear and by voice: done, skip and next, each heard once', async () => {
  await page.goto(`${house.url}/#setup`);
  await page.getByLabel(/Live words/).check();
  await page.click('a[href="#list"]');
  await page.getByRole('button', { name: 'Go through aloud' }).click();
  const number = async () => Number((await page.locator('dialog h2').textContent())!.split('.')[0]);
  // While it speaks it does not listen, or it would hear itself.
  const spokenOut = async (n: number) => {
    await soon(() => stub((s) => s.spoken.at(-1))).toMatch(new RegExp(`^Number ${n}\\.`));
    expect(await stub((s) => s.open)).toBe(false);
    await stub((s) => s.hush());
    await soon(() => stub((s) => s.open)).toBe(true);
  };
  const first = await number();
  await spokenOut(first);
  await stub((s) => s.hear('well that one is'));
  await stub((s) => s.hear('well that one is done'));
  await soon(number).not.toBe(first);
  const second = await number();
  // The final words of a listening that is over are no second answer.
  await stub((s) => s.hear('well that one is done.'));
  await spokenOut(second);
  // A phone that stops listening by itself begins again.
  await stub((s) => s.fall());
  expect(await stub((s) => s.open)).toBe(true);
  await stub((s) => s.hear('Skip'));
  await soon(number).not.toBe(second);
  const third = await number();
  await spokenOut(third);
  await stub((s) => s.hear('Next.'));
  await soon(number).not.toBe(third);
  await page.getByRole('button', { name: 'Stop' }).click();
  await soon(() => stub((s) => s.open)).toBe(false);
  await soon(states).toMatchObject({ [first]: 'done', [second]: 'open' });
  expect((await house.store.entries(JOB.id)).filter((e) => e.what.kind === 'setState')).toHaveLength(1);
});

it('takes back a wrong “done” within the going through, and says why where it may not listen', async () => {
  await page.goto(`${house.url}/#setup`);
  await page.getByLabel(/Live words/).check();
  await page.click('a[href="#list"]');
  await page.getByRole('button', { name: 'Go through aloud' }).click();
  const title = async () => (await page.locator('dialog h2').textContent())!;
  const first = await title();
  await page.locator('dialog').getByRole('button', { name: 'Done' }).click();
  await soon(title).not.toBe(first);
  await page
    .locator('dialog')
    .getByRole('button', { name: /^Undo no/ })
    .click();
  await soon(title).toBe(first);
  await soon(async () => (await house.store.entries(JOB.id)).at(-1)?.what.kind).toBe('undo');
  expect(await states()).toMatchObject({ [first.split('.')[0]!]: 'open' });
  await stub((s) => s.hush());
  await soon(() => stub((s) => s.open)).toBe(true);
  await stub((s) => s.fall('not-allowed'));
  await soon(() => page.locator('dialog [role=status]').textContent()).toMatch(/may not listen/);
});

it('reads a reply, and the briefing before going back', async () => {
  await page.goto(house.url);
  await page.waitForSelector('.slip');
  await page.locator('.slip .read').last().click();
  expect(await stub((s) => s.spoken.length)).toBeGreaterThan(0);
  expect((await stub((s) => s.spoken)).join(' ')).toMatch(/screw/);
  await page.click('a[href="#trip"]');
  await page.getByRole('button', { name: 'Read aloud' }).click();
  const spoken = (await stub((s) => s.spoken)).join(' ');
  expect(spoken).toMatch(/\d+ ready\./);
  expect(spoken).toMatch(/To bring\./);
  // What is ready comes before what is not yet.
  expect(spoken.indexOf('Not yet.')).toBeGreaterThan(spoken.indexOf('ready.'));
  const stop = page.getByRole('button', { name: 'Stop reading' });
  await stop.click();
  await page.getByRole('button', { name: 'Read aloud' }).click();
  await stop.waitFor();
  // Leaving the screen ends it.
  await page.click('a[href="#day"]');
  await soon(() => stub((s) => s.left)).toBe(0);
});

describe('live words', () => {
  beforeEach(async () => {
    await page.goto(`${house.url}/#setup`);
    await page.getByLabel(/Live words/).check();
    await page.click('a[href="#talk"]');
    await page.getByRole('button', { name: 'Listen' }).click();
  });
  const heard = () => page.locator('.heard').textContent();

  it('are shown as they come, and sent', async () => {
    await stub((s) => s.hear('need four joist hangers'));
    await soon(heard).toBe('need four joist hangers');
    await page.getByRole('button', { name: 'Stop, send' }).click();
    await page.locator('.slip', { hasText: 'need four joist hangers' }).locator('.fact').first().waitFor();
  });

  it('stay through a silence that ends the listening, each said once', async () => {
    await stub((s) => s.hear('need four joist hangers'));
    await stub((s) => s.fall('no-speech'));
    expect(await stub((s) => s.open)).toBe(true);
    await stub((s) => s.hear('porch light is dead'));
    await soon(heard).toBe('need four joist hangers porch light is dead');
    await page.getByRole('button', { name: 'Stop, send' }).click();
    await soon(async () => (await house.store.notes(JOB.id)).at(-1)?.text).toBe(
      'need four joist hangers porch light is dead',
    );
  });

  it.each([
    ['network', /needs signal.* or record/],
    ['not-allowed', /may not listen/],
  ])('end with the reason where the browser says %s, and what was heard stays in the box', async (error, why) => {
    await stub((s) => s.hear('need four joist hangers'));
    await page.evaluate((name) => (globalThis as unknown as { stub: Stub }).stub.fall(name), error);
    await soon(() => page.locator('[role=status]').textContent()).toMatch(why);
    expect(await stub((s) => s.open)).toBe(false);
    expect(await page.inputValue('#words')).toBe('need four joist hangers');
    await page.getByRole('button', { name: 'Listen' }).waitFor();
  });
});
