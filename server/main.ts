import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readNote } from '../parser/index.ts';
import { type Config, configFrom, mailFolder } from './config.ts';
import { loadDemo } from './demo.ts';
import { makeApp } from './http/app.ts';
import { buildPage } from './page/build.ts';
import { Site } from './site.ts';
import { openStore } from './store/index.ts';
import { Enclosures } from './voice/enclosures.ts';
import { loadWordClass } from './words/wordClass.ts';

const MAIL_TICK_MS = 60_000;

/** The only place that reads the environment, the clock and the signals. */
async function main(config: Config): Promise<void> {
  const store = await openStore(config.dataFolder).catch((error: unknown) => {
    throw new Error(
      `The data folder ${config.dataFolder} cannot be written (${why(error)}). Make it writable, or name another with DATA=/path/to/folder.`,
    );
  });
  const wordClass = await loadWordClass();
  const site = new Site({
    store,
    read: (text, options) => readNote(text, { ...options, wordClass }),
    now: () => new Date(),
    enclosures: new Enclosures(join(config.dataFolder, 'enclosures')),
    mail: { smtpUrl: config.smtpUrl, from: config.mailFrom, folder: mailFolder(config) },
  });
  if ((await store.jobs()).length === 0) await loadDemo(site, new Date());
  await site.readUnread();
  const page = mkdtempSync(join(tmpdir(), 'scratchcoat-page-'));
  await buildPage(page);

  const server = makeApp(site, page).listen(config.port, config.host);
  await new Promise<void>((resolve, reject) => server.once('listening', resolve).once('error', reject)).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE')
        throw new Error(
          `Port ${config.port} is taken by another program. Stop that one, or choose another with PORT=4418 npm start.`,
        );
      throw error;
    },
  );
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : config.port;
  console.log(`Scratchcoat is ready. Open http://${config.host}:${port} on this machine.`);
  if (!config.smtpUrl)
    console.log(`No mail server is set (SMTP_URL): summaries are written as files in ${mailFolder(config)}.`);

  const tick = setInterval(
    () => void site.mailTick().catch((error: unknown) => console.error(`Mail: ${why(error)}`)),
    MAIL_TICK_MS,
  );
  const stop = () => {
    clearInterval(tick);
    server.close(() => void store.close().then(() => process.exit(0)));
    server.closeAllConnections();
  };
  process.once('SIGINT', stop).once('SIGTERM', stop);
}

const why = (error: unknown) => (error instanceof Error ? error.message : String(error));

try {
  await main(configFrom(process.env));
} catch (error) {
  console.error(`Scratchcoat could not start. ${why(error)}`);
  process.exit(1);
}
