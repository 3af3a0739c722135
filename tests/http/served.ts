import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp } from '../../server/http/app.ts';
import { Site, type SiteParts } from '../../server/site.ts';
import { openStore, type Store } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';

export const NOW = new Date('2026-05-13T20:30:00Z');

/** The product on a free port, with an empty store in a folder of its own. */
export interface Served {
  folder: string;
  /** May be closed and opened anew by a test; `stop` closes the one that stands here. */
  store: Store;
  site: Site;
  url: string;
  /** Ends the server and the store, and takes the folder away. */
  stop: () => Promise<void>;
}

/** Starts the product; `read` reads its notes in the parser's place. */
export async function serve(read?: SiteParts['read']): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'served-test-'));
  const store = await openStore(join(folder, 'data'));
  const site = new Site({
    store,
    enclosures: new Enclosures(join(folder, 'enclosures')),
    now: () => NOW,
    mail: { smtpUrl: null, from: 'test@example.org', folder: join(folder, 'mail') },
    ...(read && { read }),
  });
  const server = makeApp(site, folder, 10_000).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  const served: Served = {
    folder,
    store,
    site,
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    stop: async () => {
      await new Promise((resolve) => server.close(resolve));
      await served.store.close();
      rmSync(folder, { recursive: true });
    },
  };
  return served;
}
