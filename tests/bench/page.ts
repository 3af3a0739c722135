import { readdirSync, readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { JOB, openBrowser, openHouse, PHONE } from '../browser/house.ts';

/**
 * The phone page's first load, nothing kept on the phone yet, on a processor slowed down four times: how soon the box
 * takes words and Send answers, and when the notes are there; then the same with the shell kept, and with a note
 * told (typed at once: the page's part of it). And what travels. No phone's browser has the panels that `openBrowser`
 * leaves out; they would load on the same cores meanwhile: `npx tsx tests/bench/page.ts`.
 */
const RUNS = 9;
const SLOWER = 4;

const browser = await openBrowser();
const house = await openHouse();
const times = { 'first load, box works': [] as number[], 'first load, notes shown': [] as number[] };
const later = {
  'later load, box works': [] as number[],
  'later load, notes shown': [] as number[],
  'opened, told and kept': [] as number[],
};

for (let k = 0; k < RUNS; k++) {
  const context = await browser.newContext({ viewport: PHONE, timezoneId: JOB.zone });
  // By the page's own clock: the frame after the first note stands there.
  await context.addInitScript(() => {
    new MutationObserver((_, watched) => {
      if (!document.querySelector('.slip')) return;
      watched.disconnect();
      requestAnimationFrame(() => setTimeout(() => performance.mark('shown')));
    }).observe(document, { subtree: true, childList: true });
  });
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const load = async () => {
    await page.waitForFunction(() => performance.getEntriesByName('shown').length, null, { polling: 200 });
    return page.evaluate(() => ({
      works: performance.getEntriesByName('interactive')[0]!.startTime,
      shown: performance.getEntriesByName('shown')[0]!.startTime,
    }));
  };
  await page.goto(house.url);
  const first = await load();
  times['first load, box works'].push(first.works);
  times['first load, notes shown'].push(first.shown);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await page.waitForTimeout(1500);
  await page.reload();
  const second = await load();
  later['later load, box works'].push(second.works);
  later['later load, notes shown'].push(second.shown);
  await page.close();
  const again = await context.newPage();
  const slowed = await context.newCDPSession(again);
  await slowed.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const opened = performance.now();
  await again.goto(house.url);
  await again.fill('#words', `Shelf bracket ${k} is bent.`);
  await again.press('#words', 'Enter');
  await again.locator('.slip', { hasText: `bracket ${k}` }).waitFor();
  later['opened, told and kept'].push(performance.now() - opened);
  await context.close();
}
console.log(`${cpus().length} cores, load average ${loadavg()[0]!.toFixed(1)}: a busy machine shows in every figure`);
for (const [name, all] of Object.entries({ ...times, ...later })) {
  all.sort((a, b) => a - b);
  const [median, worst] = [all[Math.floor(all.length / 2)]!, all.at(-1)!];
  console.log(`${name}: median ${Math.round(median)} ms, worst of ${RUNS} ${Math.round(worst)} ms`);
}

const built = Object.fromEntries(
  readdirSync(house.page)
    .filter((file) => !file.endsWith('.gz'))
    .map((file) => [file, gzipSync(readFileSync(join(house.page, file))).length]),
);
const { 'reader.js': reader = 0, ...shell } = built;
const whole = ['index.html', 'app.js', 'app.css', 'icon.svg', 'manifest.webmanifest'].reduce(
  (sum, file) => sum + (shell[file] ?? 0),
  0,
);
console.log(
  `first load, compressed: ${(whole / 1000).toFixed(1)} KB; the reader with its vocabulary, later: ${(reader / 1000).toFixed(1)} KB`,
);
await browser.close();
await house.stop();
