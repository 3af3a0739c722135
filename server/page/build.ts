import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { iconPng, iconSvg } from './icons.ts';

const here = dirname(fileURLToPath(import.meta.url));

const manifest = {
  name: 'Scratchcoat',
  short_name: 'Scratchcoat',
  description: 'Say it at the end of the task: the list, the order and the day follow.',
  start_url: '/',
  display: 'standalone',
  background_color: '#f3efe6',
  theme_color: '#0b4a43',
  icons: [
    { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
    { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
  ],
};

/**
 * Builds the phone page into `outDir`: `index.html`, `app.js`, `app.css`, the reader that works beside the page, the
 * service worker, the manifest and the icons, each but the pictures also packed. The folder is emptied first. Throws what esbuild throws when the sources do not compile.
 */
export async function buildPage(outDir: string): Promise<void> {
  await rm(outDir, { recursive: true, force: true });
  await mkdir(outDir, { recursive: true });
  const common = { bundle: true, minify: true, target: 'es2022', logLevel: 'warning', outdir: outDir } as const;
  const { metafile } = await build({
    ...common,
    entryPoints: [
      { in: join(here, 'app/main.tsx'), out: 'app' },
      { in: join(here, 'styles/app.css'), out: 'app' },
    ],
    format: 'esm',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    metafile: true,
  });
  await build({
    ...common,
    entryPoints: [{ in: join(here, 'worker/reader.ts'), out: 'reader' }],
    format: 'iife',
  });
  await writeFile(join(outDir, 'index.html'), await readFile(join(here, 'index.html')));
  await writeFile(join(outDir, 'manifest.webmanifest'), JSON.stringify(manifest));
  await writeFile(join(outDir, 'icon.svg'), iconSvg());
  for (const side of [180, 192, 512]) await writeFile(join(outDir, `icon-${side}.png`), iconPng(side));

  const built = [
    ...Object.keys(metafile.outputs).map((file) => `/${relative(outDir, file).replaceAll('\\', '/')}`),
    '/reader.js',
  ];
  const shell = ['/', ...built, '/manifest.webmanifest', '/icon.svg', '/icon-192.png'];
  await build({
    ...common,
    entryPoints: [{ in: join(here, 'worker/shell.ts'), out: 'sw' }],
    format: 'iife',
    define: { SHELL: JSON.stringify(shell), SHELL_VERSION: JSON.stringify(await versionOf(outDir, built)) },
  });
  for (const file of await readdir(outDir))
    if (/\.(?:html|js|css|svg|webmanifest)$/.test(file))
      await writeFile(join(outDir, `${file}.gz`), gzipSync(await readFile(join(outDir, file)), { level: 9 }));
}

/** Changes whenever a built file does, so that a phone takes the new shell whole. */
async function versionOf(outDir: string, built: string[]): Promise<string> {
  const hash = createHash('sha256');
  for (const file of ['/index.html', ...built]) hash.update(await readFile(join(outDir, file)));
  return hash.digest('hex').slice(0, 12);
}
