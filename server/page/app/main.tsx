import { hydrate, render } from 'preact';
import { Frame } from './frame.tsx';
import { clockOf } from './kit/clock.ts';
import { screenOf } from './kit/hooks.ts';
import { start } from './kit/start.ts';

const app = document.getElementById('app')!;
// The box to talk into came with the page and may be in use already: it is taken over, never drawn again.
if (screenOf(location.hash) === 'talk') hydrate(<Frame />, app);
else {
  app.replaceChildren();
  render(<Frame />, app);
}
performance.mark('interactive');
// The first form of dates takes an old phone a quarter of a second: made while the server is waited for.
(globalThis.requestIdleCallback ?? setTimeout)(() => clockOf('2026-01-01T00:00'));
await start();
// After the notes are there, since it fetches the reader with its vocabulary. Plain http on a network has no service
// worker: the page then works while the server answers, and says so in set-up.
if ('serviceWorker' in navigator) void navigator.serviceWorker.register('/sw.js').catch(() => undefined);
