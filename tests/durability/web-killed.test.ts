import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { HistoryPage, Written } from '@quartermark/api/client';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { ensureBuilt, nextCommand } from '../../apps/launcher/src/build.ts';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { type Home, home, SECRET } from '../support/api-house.ts';
import { eventually } from '../support/eventually.ts';
import { HttpApi } from '../support/http-api.ts';

const web = path.resolve(import.meta.dirname, '../../apps/web');
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-web-killed-'));
let at: Home;
const running: ChildProcess[] = [];

beforeAll(async () => {
  await ensureBuilt({ test: true, dataDir: folder, say: () => {} });
  at = await home('web_killed');
});
afterEach(async () => {
  await Promise.all(running.splice(0).map(kill));
});
afterAll(async () => {
  await at?.close();
  rmSync(folder, { recursive: true, force: true });
});

type Web = { child: ChildProcess; api: HttpApi; said(words: string): Promise<unknown> };

/** The web app in a process of its own, on the house's database, with the owner's session. */
async function start(more: Record<string, string> = {}): Promise<Web> {
  const port = await freePort();
  const origin = `http://127.0.0.1:${port}`;
  const child = spawn(
    process.execPath,
    [nextCommand(), 'start', '-H', '127.0.0.1', '-p', `${port}`],
    {
      cwd: web,
      env: {
        PATH: process.env.PATH,
        NODE_ENV: 'production',
        NEXT_TELEMETRY_DISABLED: '1',
        TEST_BUILD: '1',
        DATABASE_APP_URL: at.database.appUrl,
        QUARTERMARK_SECRET: SECRET,
        QUARTERMARK_ORIGIN: origin,
        QUARTERMARK_TODAY: at.today,
        PORT: `${port}`,
        ...more,
      },
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  running.push(child);
  let printed = '';
  child.stdout?.on('data', (data) => {
    printed += data;
  });
  const healthy = () =>
    fetch(`${origin}/health`).then(
      (response) => response.ok,
      () => false,
    );
  await eventually('the web app to answer', healthy, 60_000);
  return {
    child,
    api: new HttpApi(origin, fetch, { cookie: at.cookie }),
    said: (words) => eventually(`"${words}"`, async () => printed.includes(words)),
  };
}

async function kill(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGKILL');
  await gone;
}

test('a command sent again after a SIGKILL between commit and answer is one entry', async () => {
  const { garageId, carId } = at;
  const entry = at.draft('note', { note: 'Belt cover refitted.' });
  const command = { garageId, commandId: randomUUID(), entry };

  const killed = await start({ QUARTERMARK_PAUSE_AT: 'afterCommit' });
  const lost = killed.api.attempt('entry.record', command).then(
    () => 'answered',
    () => 'no answer',
  );
  await killed.said('paused at afterCommit');
  await kill(killed.child);
  expect(await lost).toBe('no answer');

  const next = await start();
  const written = await next.api.mutate<Written>('entry.record', command);
  expect(written).toMatchObject({ id: entry.id, revision: 1 });
  const { entries } = await next.api.query<HistoryPage>('entry.history', { garageId, carId });
  expect(entries.map((one) => [one.entry.id, one.revision, one.removed])).toEqual([
    [entry.id, 1, false],
  ]);
  // and the answer that was lost is the one that came now: sent a third time, it stays
  expect(await next.api.mutate<Written>('entry.record', command)).toEqual(written);
});
