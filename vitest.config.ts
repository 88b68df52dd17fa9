import { defineConfig } from 'vitest/config';

const withCluster = {
  globalSetup: ['tests/support/cluster.ts'],
  testTimeout: 60_000,
  hookTimeout: 120_000,
};

export default defineConfig({
  test: {
    reporters: ['default', './tests/reporters/counts.ts'],
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['{packages,apps}/*/src/**/*.test.{ts,tsx}', 'seed/src/**/*.test.ts'],
          exclude: ['**/node_modules/**', '**/.next*/**', '**/dist*/**'],
          // properties walk thousands of logs, on machines that do other things too
          testTimeout: 60_000,
        },
      },
      { test: { name: 'reference', include: ['tests/reference/**/*.test.ts'] } },
      { test: { name: 'architecture', include: ['tests/architecture/**/*.test.ts'] } },
      {
        test: { name: 'integration', include: ['tests/integration/**/*.test.ts'], ...withCluster },
      },
      {
        test: {
          name: 'durability',
          include: ['tests/durability/**/*.test.ts'],
          ...withCluster,
          testTimeout: 180_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});
