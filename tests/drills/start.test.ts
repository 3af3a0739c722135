import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const NOTE = { saidAt: '2026-05-13T10:00:00', text: 'Need two bags of mortar.' };
let folder: string;
let child: ChildProcess | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'start-test-'));
});
afterEach(() => {
  child?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

/** Starts the real program; resolves with its address, or with what it said when it stopped. */
function start(env: Record<string, string>): Promise<{ url: string | null; said: string; code: number | null }> {
  const running = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
    env: { ...process.env, PORT: '0', DATA: join(folder, 'data'), ...env },
  });
  child = running;
  let said = '';
  return new Promise((resolve) => {
    const hear = (data: Buffer) => {
      said += data;
      const port = /Open http:\/\/127\.0\.0\.1:(\d+)/.exec(said)?.[1];
      if (port) resolve({ url: `http://127.0.0.1:${port}`, said, code: null });
    };
    running.stdout?.on('data', hear);
    running.stderr?.on('data', hear);
    running.once('exit', (code) => resolve({ url: null, said, code }));
  });
}

describe('starting', () => {
  it('loads the demo job into an empty store and serves the page', async () => {
    const { url } = await start({});
    const jobs = await (await fetch(`${url}/api/jobs`)).json();
    expect(jobs).toHaveLength(1);
    expect(jobs[0].open).toBeGreaterThan(5);
    expect(await (await fetch(`${url}/`)).text()).toContain('<html lang="en"');
  });

  it('refuses another address than loopback without the setting that says what it exposes', async () => {
    const { code, said } = await start({ HOST: '0.0.0.0' });
    expect(code).toBe(1);
    expect(said).toContain('read and change every job');
  });

  it('names a busy port and what to do', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as AddressInfo;
    const { code, said } = await start({ PORT: String(port) });
    other.close();
    expect(code).toBe(1);
    expect(said).toContain(`Port ${port} is taken`);
  });

  it('names a data folder that cannot be written', async () => {
    const file = join(folder, 'a-file');
    writeFileSync(file, 'no folder');
    const { code, said } = await start({ DATA: join(file, 'data') });
    expect(code).toBe(1);
    expect(said).toContain('cannot be written');
  });

  it('keeps every acknowledged note through kill -9', async () => {
    const acknowledged: string[] = [];
    for (let round = 0; round < 2; round++) {
      const { url } = await start({});
      const running = child!;
      const before = acknowledged.length;
      const sending = (async () => {
        for (let k = 0; k < 40; k++) {
          const id = `kill-note-${round}-${String(k).padStart(3, '0')}`;
          const res = await fetch(`${url}/api/jobs/demo-pottery-studio/notes/${id}`, {
            method: 'PUT',
            headers: { 'Content-Type': 'application/json' },
            body: JSON.stringify(NOTE),
          });
          if (res.ok) acknowledged.push(id);
        }
      })().catch(() => undefined);
      // Killed once some are acknowledged, in the midst of the next, however slow the machine is.
      await vi.waitFor(() => expect(acknowledged.length).toBeGreaterThan(before + round), {
        timeout: 60_000,
        interval: 5,
      });
      running.kill('SIGKILL');
      await sending;
    }
    const { url } = await start({});
    const kept = new Set(
      (await (await fetch(`${url}/api/jobs/demo-pottery-studio/notes`)).json()).map((n: { id: string }) => n.id),
    );
    expect(acknowledged.length).toBeGreaterThan(0);
    expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  }, 240_000);
});
