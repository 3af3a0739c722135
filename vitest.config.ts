import { defineConfig } from 'vitest/config';

/** Tests that hold a server, a browser or another process of their own. */
const OWN_HOUSE = ['tests/browser/**/*.test.ts', 'tests/drills/**/*.test.ts'];

export default defineConfig({
  test: {
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: ['default'],
    // A test waits for the browser or for the store as often as it reckons.
    maxWorkers: '100%',
    // The parser's tables are read, and the page is built, once for all files that a worker takes: a quarter of the time.
    isolate: false,
    projects: [
      {
        extends: true,
        test: { name: 'rooms', include: ['tests/**/*.test.ts'], exclude: OWN_HOUSE },
      },
      // How long a browser or a process takes to start is not theirs to judge: on a machine with other work, three times as long.
      { extends: true, test: { name: 'houses', include: OWN_HOUSE, testTimeout: 90_000 } },
    ],
  },
});
