/**
 * First load, first note and heap of the parser and of a general tagger, each alone in a fresh process,
 * in milliseconds of processor time, since the machine may have other work: `tsx tests/bench/load.ts`.
 * The parser is bundled first, as the page gets it, so that no compiler is measured.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildSync } from 'esbuild';

const folder = mkdtempSync(join(tmpdir(), 'load-bench-'));
const bundle = join(folder, 'parser.cjs');
buildSync({ entryPoints: ['parser/index.ts'], bundle: true, platform: 'node', format: 'cjs', outfile: bundle });
const tagger = createRequire(import.meta.url).resolve('compromise/two');
const NOTE =
  'Loft window is cracked on the left side, need two and a half bags of mortar, let it cure 24 hours then paint it.';

function measured(file: string, first: string) {
  const script = join(folder, 'measure.mjs');
  writeFileSync(
    script,
    `const busy = () => { const { user, system } = process.cpuUsage(); return (user + system) / 1000; };
gc(); const heap = process.memoryUsage().heapUsed; const from = busy();
const loaded = await import(${JSON.stringify(pathToFileURL(file).href)}); const ready = busy();
(${first})(loaded.default ?? loaded); const read = busy(); gc();
console.log(JSON.stringify([ready - from, read - ready, (process.memoryUsage().heapUsed - heap) / 2 ** 20]));`,
  );
  const runs = Array.from({ length: 5 }, () => {
    const { stdout } = spawnSync(process.execPath, ['--expose-gc', script], { encoding: 'utf8' });
    return JSON.parse(stdout) as [number, number, number];
  });
  const middle = (k: 0 | 1 | 2) =>
    Number(
      runs
        .map((run) => run[k])
        .sort((a, b) => a - b)[2]!
        .toFixed(1),
    );
  return { 'load ms': middle(0), 'first note ms': middle(1), 'heap MB': middle(2) };
}

const note = JSON.stringify(NOTE);
console.table({
  parser: measured(bundle, `(p) => p.readNote(${note}, { saidAt: '2026-05-12T15:20:00' })`),
  'compromise/two': measured(tagger, `(nlp) => nlp(${note})`),
});
rmSync(folder, { recursive: true, force: true });
