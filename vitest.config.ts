import { defineConfig } from 'vitest/config';

const node = { environment: 'node' as const };
/** Projects that run side by side must agree on this; more only makes each of them wait. */
const besides = { ...node, maxWorkers: 2 };
/**
 * Files that keep no state in a module share a process and what it has loaded, which halves the
 * time of the small ones. A file that sets the clock, a variable or a mock puts it back itself.
 */
const sharing = { ...besides, isolate: false };

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...sharing,
          name: 'unit',
          include: ['tests/{core,shared,renderer,import-rule,storage,host}/**/*.test.{ts,tsx}'],
          // How long a test takes is no check: a busy machine may take its time.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      // The stand-in for Electron is one application: each file needs a fresh one.
      {
        test: {
          ...besides,
          name: 'electron',
          include: ['tests/electron/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          ...sharing,
          name: 'published',
          include: ['tests/published/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          ...besides,
          name: 'campaign',
          include: ['tests/campaign/**/*.test.ts'],
          testTimeout: 300_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          ...besides,
          name: 'install',
          include: ['tests/install/**/*.test.ts'],
          testTimeout: 300_000,
        },
      },
      {
        test: {
          ...node,
          name: 'e2e',
          include: ['tests/e2e/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 60_000,
          // Every file starts a program, a folder and a browser of its own.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
