import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Cold start with an empty store, then the time of one note through the running server: `npx tsx tests/bench/server.ts`. */
const NOTES = 200;
const TEXT =
  'Loft window is cracked on the left side. Need two and a half bags of mortar and a tube of caulk, let it cure 24 hours then paint it.';
const folder = mkdtempSync(join(tmpdir(), 'server-bench-'));
const began = performance.now();
const server = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
  env: { ...process.env, PORT: '0', DATA: folder },
});
const url = await new Promise<string>((resolve) => {
  let said = '';
  server.stdout.on('data', (data: Buffer) => {
    said += data;
    const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
    if (found) resolve(found[0]);
  });
});
console.log(`cold start, demo job loaded: ${Math.round(performance.now() - began)} ms`);

const times: number[] = [];
for (let k = 0; k < NOTES; k++) {
  const from = performance.now();
  const body = JSON.stringify({
    saidAt: `2026-05-13T10:${String(k % 60).padStart(2, '0')}:00`,
    text: `${TEXT} Room ${k}.`,
  });
  const res = await fetch(`${url}/api/jobs/demo-pottery-studio/notes/bench-note-${k}`, {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json' },
    body,
  });
  if (!res.ok) throw new Error(await res.text());
  times.push(performance.now() - from);
}
times.sort((a, b) => a - b);
console.log(
  `one note of ${NOTES}: median ${times[NOTES / 2]!.toFixed(1)} ms, p99 ${times[Math.floor(NOTES * 0.99)]!.toFixed(1)} ms`,
);
server.kill('SIGKILL');
rmSync(folder, { recursive: true, force: true });
