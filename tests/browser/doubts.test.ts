import { expect, it } from 'vitest';
import { holdPhone, openScreen, page, soon, write } from './phone.ts';

holdPhone();

const filter = (name: RegExp) => page.getByRole('button', { name });
const line = () => page.locator('.item', { hasText: 'old dog' });

it('what was told in passing stands apart with its words, and comes on the list at a tap', async () => {
  await openScreen('talk');
  await write(
    'Hung the new storm door on the side porch and it closes fine. Neighbour was telling me his old dog came in again by the other gate, so that was the morning.',
  );
  await page.locator('.slip', { hasText: 'Not sure, so kept apart' }).waitFor();
  await page.click('a[href="#list"]');
  await filter(/^Left/).waitFor();
  expect(await line().count()).toBe(0);
  await filter(/^Not sure 1/).click();
  await soon(() => line().textContent()).toMatch(/heard: his old dog came in again by the other gate/);
  await line().locator('.task').click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await filter(/^Left/).click();
  await soon(() => line().count()).toBe(1);
  await soon(() => filter(/^Not sure/).count()).toBe(0);
});
