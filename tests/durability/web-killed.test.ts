import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { HistoryPage, Written } from '@quartermark/api/client';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { ensureBuilt } from '../../apps/launcher/src/build.ts';
import { type Home, home } from '../support/api-house.ts';
import { startWeb, type WebProcess } from '../support/web-process.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-web-killed-'));
let at: Home;
const running: WebProcess[] = [];

beforeAll(async () => {
  await ensureBuilt({ test: true, dataDir: folder, say: () => {} });
  at = await home('web_killed');
});
afterEach(async () => {
  await Promise.all(running.splice(0).map((web) => web.kill()));
});
afterAll(async () => {
  await at?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function start(more: Record<string, string> = {}): Promise<WebProcess> {
  const web = await startWeb(at, more);
  running.push(web);
  return web;
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
  await killed.kill();
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
