import { defineConfig } from 'vitest/config';

/** Tests that hold a server, a browser or another process of their own. */
const OWN_HOUSE = ['tests/browser/**/*.test.ts', 'tests/drills/**/*.test.ts'];

export default defineConfig({
  test: {
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: ['default'],
    projects: [
      {
        extends: true,
        // The parser's tables are read once for all of these files, and not once a file: a quarter of the time.
        test: { name: 'rooms', include: ['tests/**/*.test.ts'], exclude: OWN_HOUSE, isolate: false },
      },
      { extends: true, test: { name: 'houses', include: OWN_HOUSE, isolate: false } },
    ],
  },
});
