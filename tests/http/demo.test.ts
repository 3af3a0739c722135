import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { loadDemo } from '../../server/demo.ts';
import { Site } from '../../server/site.ts';
import { openStore } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';

it('the demo ends yesterday as the job’s own clock tells it, also late in the evening', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'demo-test-'));
  const store = await openStore(folder);
  // Half past nine in the evening of the 13th in Chicago, the 14th already by UTC.
  const now = new Date('2026-05-14T02:30:00Z');
  const mail = { smtpUrl: null, from: 'crew@example.org', folder };
  await loadDemo(new Site({ store, now: () => now, enclosures: new Enclosures(folder), mail }), now);
  const [job] = await store.jobs();
  expect((await store.notes(job!.id)).at(-1)!.saidAt.slice(0, 10)).toBe('2026-05-12');
  await store.close();
  rmSync(folder, { recursive: true });
});
