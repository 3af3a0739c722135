import { render } from 'preact';
import { Frame } from './frame.tsx';
import { start } from './kit/model.ts';

render(<Frame />, document.getElementById('app')!);
void start();
// Plain http on a network has no service worker: the page then works while the server answers, and says so in set-up.
if ('serviceWorker' in navigator) void navigator.serviceWorker.register('/sw.js').catch(() => undefined);
