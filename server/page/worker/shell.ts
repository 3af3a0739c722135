/**
 * Keeps the page itself on the phone, so that it opens with no signal. Answers of the API are kept by the page in its
 * own store and never pass through here.
 */
/** Put in by the build. */
declare const SHELL: string[];
declare const SHELL_VERSION: string;

const worker = self as unknown as ServiceWorkerGlobalScope;

const cacheName = `shell-${SHELL_VERSION}`;

worker.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(cacheName)
      .then((cache) => cache.addAll(SHELL.map((path) => new Request(path, { cache: 'reload' }))))
      .then(() => worker.skipWaiting()),
  );
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== cacheName).map((name) => caches.delete(name))))
      .then(() => worker.clients.claim()),
  );
});

worker.addEventListener('fetch', (event) => {
  const { pathname, origin } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== worker.location.origin) return;
  if (event.request.mode === 'navigate' && pathname === '/') event.respondWith(kept('/', event.request));
  else if (SHELL.includes(pathname)) event.respondWith(kept(pathname, event.request));
});

async function kept(path: string, request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  return (await cache.match(path)) ?? fetch(request);
}

export {};
