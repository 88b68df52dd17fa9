import { defineConfig, devices } from '@playwright/test';

const PORT = 3170;
const PLAIN_PORT = 3171;
/** The day of every journey: the demo garage is laid out relative to it. */
const TODAY = '2026-06-15';

const phone = {
  ...devices['Desktop Chrome'],
  viewport: { width: 360, height: 760 },
  hasTouch: true,
};
const desk = { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 800 } };
const demo = 'test-results/demo.json';
const owner = 'test-results/owner.json';

const server = (port: number, tokenName: string, env: Record<string, string>) => ({
  command: 'node tests/support/serve.mjs',
  // the launcher prints the address with the setup token when everything serves
  wait: { stdout: new RegExp(`start\\?token=(?<${tokenName}>[\\w-]+)`) },
  env: { PORT: String(port), HOST: '127.0.0.1', ...env },
  gracefulShutdown: { signal: 'SIGTERM' as const, timeout: 6_000 },
  timeout: 300_000,
  stdout: 'ignore' as const,
});

/**
 * A setup token opens the demo until an owner exists, so the journeys through the demo come first, then
 * the owner is made, then the owner's journeys. Each person signs in once; the session is reused.
 */
export default defineConfig({
  testDir: 'tests/e2e',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  // machines are shared: a journey that takes five seconds alone may take thirty
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['list'], ['./tests/reporters/playwright-counts.ts']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    trace: 'retain-on-failure',
    // journeys without signal switch it on; the others are served by the server alone
    serviceWorkers: 'block',
    launchOptions: {
      executablePath: '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-gpu'],
    },
  },
  webServer: [
    server(PORT, 'QUARTERMARK_TOKEN', { TEST_BUILD: '1', QUARTERMARK_TODAY: TODAY }),
    server(PLAIN_PORT, 'QUARTERMARK_PLAIN_TOKEN', { TEST_BUILD: '', QUARTERMARK_TODAY: '' }),
  ],
  projects: [
    { name: 'open the demo', testMatch: 'open-demo.setup.ts' },
    {
      name: 'demo at 360',
      testMatch: 'demo/**/*.spec.ts',
      use: { ...phone, storageState: demo },
      dependencies: ['open the demo'],
    },
    {
      name: 'demo at 1280',
      testMatch: 'demo/**/*.spec.ts',
      // each fact is to be found on a phone
      testIgnore: 'demo/facts.spec.ts',
      use: { ...desk, storageState: demo },
      dependencies: ['open the demo'],
    },
    {
      name: 'make the owner',
      testMatch: 'make-owner.setup.ts',
      dependencies: ['demo at 360', 'demo at 1280'],
    },
    {
      name: 'owner at 360',
      testMatch: 'owner/**/*.spec.ts',
      use: { ...phone, storageState: owner },
      dependencies: ['make the owner'],
    },
    {
      name: 'owner at 1280',
      testMatch: 'owner/**/*.spec.ts',
      // the paddock is a phone's
      testIgnore: 'owner/pocket-*.spec.ts',
      use: { ...desk, storageState: owner },
      dependencies: ['make the owner'],
    },
    {
      name: 'plain build',
      testMatch: 'plain/**/*.spec.ts',
      use: { ...phone, baseURL: `http://127.0.0.1:${PLAIN_PORT}` },
    },
  ],
});
