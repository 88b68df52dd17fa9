import { expect, test } from 'vitest';
import { webEnvironment, workerEnvironment } from './child-environment.ts';
import { readEnv } from './env.ts';

const given = {
  PATH: '/bin',
  DATABASE_URL: 'postgres://owner:owners-word@db/q',
  QUARTERMARK_TODAY: '2026-06-15',
  REDIS_URL: 'redis://r:6379',
} as unknown as NodeJS.ProcessEnv;
const servers = {
  ownerUrl: 'postgres://owner:owners-word@db/q',
  appUrl: 'postgres://app:apps-word@db/q',
  jobUrl: 'postgres://job:jobs-word@db/q',
  redisUrl: 'redis://r:6379',
  cluster: null,
};

test('webEnvironment() knows the app role and nothing of owner, job or queue', () => {
  const web = webEnvironment(readEnv(given), servers, 's'.repeat(32), 'run-1', {
    host: '127.0.0.1',
    port: 3000,
  });
  expect(web).toMatchObject({
    DATABASE_APP_URL: servers.appUrl,
    QUARTERMARK_RUN: 'run-1',
    PATH: '/bin',
  });
  expect(JSON.stringify(web)).not.toMatch(/owners-word|jobs-word|redis:/);
});

test('workerEnvironment() knows the job role and the queue and nothing of owner or app', () => {
  const worker = workerEnvironment(readEnv(given), servers);
  expect(worker).toMatchObject({ DATABASE_JOB_URL: servers.jobUrl, REDIS_URL: servers.redisUrl });
  expect(JSON.stringify(worker)).not.toMatch(/owners-word|apps-word/);
});

test('workerEnvironment() knows the address people open, and where the post may go', () => {
  const POST_ALLOW_PRIVATE = 'mail.home.arpa';
  const worker = workerEnvironment(readEnv({ ...given, POST_ALLOW_PRIVATE }), servers);
  expect(worker).toMatchObject({ QUARTERMARK_ORIGIN: 'http://127.0.0.1:3000', POST_ALLOW_PRIVATE });
});

test('workerEnvironment() hands the shifted day on to a test build alone', () => {
  expect(workerEnvironment(readEnv(given), servers).QUARTERMARK_TODAY).toBeUndefined();
  const test = readEnv({ ...given, TEST_BUILD: '1' });
  expect(workerEnvironment(test, servers).QUARTERMARK_TODAY).toBe('2026-06-15');
});
