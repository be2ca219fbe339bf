import { defineConfig } from 'vitest/config';

const node = { environment: 'node' as const };

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...node,
          name: 'unit',
          include: [
            'tests/{core,shared,electron,renderer,import-rule,storage,host}/**/*.test.{ts,tsx}',
          ],
          testTimeout: 20_000,
        },
      },
      { test: { ...node, name: 'published', include: ['tests/published/**/*.test.ts'] } },
      {
        test: {
          ...node,
          name: 'campaign',
          include: ['tests/campaign/**/*.test.ts'],
          testTimeout: 300_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          ...node,
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
