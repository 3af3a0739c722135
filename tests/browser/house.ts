import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { makeApp } from '../../server/http/app.ts';
import { buildPage } from '../../server/page/build.ts';
import { Site } from '../../server/site.ts';
import { openStore, type Store } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';

/** The moment at which the tests stand: a Wednesday afternoon in Chicago. */
export const NOW = new Date('2026-05-13T20:30:00Z');

export const JOB = {
  id: '01970000-0000-7000-8000-000000000001',
  name: 'Porch and laundry, Alder Street',
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas: ['laundry', 'back porch', 'hall'],
  builtYear: 1962,
  mailTo: ['office@example.org'],
  mailAt: '17:30',
};

const WEEK: [string, string, string][] = [
  [
    '2026-05-11T15:10:00',
    'Dana',
    'Pulled the old washer box in the laundry. Shutoff valve is seized. Need a new half inch quarter turn stop and two supply hoses.',
  ],
  [
    '2026-05-11T16:40:00',
    'Luis',
    'Back porch: two deck boards are rotten, need three 5/4x6 by 12 foot boards. Ledger gap is 1-3/8".',
  ],
  [
    '2026-05-12T11:20:00',
    'Dana',
    'Laundry floor leveled, let it cure 48 hours then lay the vinyl plank. Floor is 8 ft by 11 ft 6 in.',
  ],
  [
    '2026-05-12T15:05:00',
    'Luis',
    'Hall: drywall patched by the door, sand it tomorrow. Bought 2 bags of joint compound, spent 38 dollars. Call the plumber about the shutoff by friday.',
  ],
  [
    '2026-05-13T14:15:00',
    'Dana',
    'Cut the porch skirt at 41 and five eighths. Need a box of deck screws and one tube of construction adhesive. Rail post is loose on the back porch.',
  ],
];

export interface House {
  url: string;
  /** Where the built page lies. */
  page: string;
  store: Store;
  stop(): Promise<void>;
  /** Takes the server away, and brings it back at the same address over the same store. */
  away(): Promise<void>;
  back(): Promise<void>;
}

/** The whole application over a folder of its own, with a job and the notes of its first three days. */
export async function openHouse({ notes = true } = {}): Promise<House> {
  const folder = mkdtempSync(join(tmpdir(), 'page-test-'));
  const page = await builtPage();
  const store = await openStore(join(folder, 'data'));
  const mail = { smtpUrl: null, from: 'test@example.org', folder: join(folder, 'mail') };
  const asked = new Set<Promise<unknown>>();
  const enclosures = new Enclosures(join(folder, 'enclosures'));
  const site = new Site({ store: counted(store, asked), now: () => NOW, enclosures, mail });
  await store.putJob(JOB);
  if (notes)
    for (const [k, [saidAt, by, text]] of WEEK.entries())
      await site.take(JOB, `01970000-0000-7000-8000-0000000001${String(k).padStart(2, '0')}`, { saidAt, by, text });
  const app = makeApp(site, page, 10_000);
  let server = await listening(app, 0);
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}`,
    page,
    store,
    away: () => closed(server),
    async back() {
      server = await listening(app, port);
    },
    async stop() {
      await closed(server);
      // A page that was closed leaves its last request half way through the store.
      while (asked.size) {
        await Promise.allSettled(asked);
        // One that was answered may ask for the next.
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

let built: Promise<string> | null = null;

/** The page is built once for all houses of a run. */
function builtPage(): Promise<string> {
  built ??= (async () => {
    const folder = mkdtempSync(join(tmpdir(), 'page-built-'));
    process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
    await buildPage(folder);
    return folder;
  })();
  return built;
}

/** The same store; what has been asked of it and not answered yet is in `asked`. */
function counted(store: Store, asked: Set<Promise<unknown>>): Store {
  return new Proxy(store, {
    get(target, name: keyof Store) {
      return (...given: never[]) => {
        const answer = (target[name] as (...args: never[]) => Promise<unknown>)(...given);
        asked.add(answer);
        return answer.finally(() => asked.delete(answer));
      };
    },
  });
}

function listening(app: ReturnType<typeof makeApp>, port: number): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = app.listen(port, '127.0.0.1');
    server.once('listening', () => resolve(server)).once('error', reject);
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

/**
 * What the browser does besides showing pages. Its two panels under the address bar are pages of their own, 400 files
 * anew for each phone that a test opens. Chromium heeds the last such list only: the others are those that Playwright
 * switches off.
 */
const UNUSED = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

export function openBrowser(): Promise<Browser> {
  const executablePath = [
    process.env.CHROMIUM ?? '',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ].find((path) => path && existsSync(path));
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      `--disable-features=${UNUSED}`,
      // A microphone that hums, and no question whether it may.
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
    ],
  });
}

/** A tablet held upright. */
export const TABLET = { width: 820, height: 1180 };

/** An old phone's width. */
export const PHONE = { width: 360, height: 740 };
