import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import postgres from 'postgres';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ensureBuilt } from '../../apps/launcher/src/build.ts';
import { type Home, home } from '../support/api-house.ts';
import { startWeb, type WebProcess } from '../support/web-process.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-web-secrets-'));
let at: Home;
let web: WebProcess;

beforeAll(async () => {
  await ensureBuilt({ test: true, dataDir: folder, say: () => {} });
  at = await home('web_secrets');
  web = await startWeb(at);
});
afterAll(async () => {
  await web?.kill();
  await at?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Nobody gets in any more, and whoever is in is thrown out. */
async function shutDatabase(shut: boolean): Promise<void> {
  const admin = postgres(at.database.ownerUrl.replace(/\/[^/]*$/, '/postgres'), { max: 1 });
  const name = new URL(at.database.ownerUrl).pathname.slice(1);
  await admin`alter database ${admin(name)} allow_connections ${admin.unsafe(`${!shut}`)}`;
  if (shut)
    await admin`select pg_terminate_backend(pid) from pg_stat_activity where datname = ${name}`;
  await admin.end();
}

test('addresses that are keys are printed nowhere, whether they open something or fail', async () => {
  const made = { garageId: at.garageId, commandId: randomUUID() };
  const { path: feed } = await web.api.mutate<{ path: string }>('feed.make', made);
  const unsubscribe = `/api/unsubscribe/${'k'.repeat(43)}`;
  const ask = async (where: string, method = 'GET') =>
    (await fetch(`${web.origin}${where}`, { method, redirect: 'manual' })).status;
  const asked = [`${feed}?x=1`, `${feed}/further`, `/api/feed/${'f'.repeat(43)}.ics`];
  expect(await ask(feed)).toBe(200);
  for (const where of asked) await ask(where);
  for (const method of ['GET', 'POST', 'PUT']) await ask(unsubscribe, method);
  await shutDatabase(true);
  expect(await ask(feed)).toBe(500);
  expect(await ask(unsubscribe, 'POST')).toBe(500);
  for (const failed of ['a calendar could not be given', 'somebody could not be taken off'])
    await web.said(failed);
  await shutDatabase(false);
  const printed = web.printed();
  for (const secret of [feed.slice('/api/feed/'.length, -4), 'k'.repeat(43), 'f'.repeat(43)])
    expect(printed).not.toContain(secret);
});
