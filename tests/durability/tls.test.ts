import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import https from 'node:https';
import os from 'node:os';
import path from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import type { Written } from '@quartermark/api/client';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ensureBuilt } from '../../apps/launcher/src/build.ts';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { isAlive } from '../../apps/launcher/src/process.ts';
import { apiOf } from '../support/browser/api-of.ts';
import { type CertificateFiles, makeCertificate } from '../support/certificate.ts';
import { eventually } from '../support/eventually.ts';
import { type Launched, launch, listeningAddresses } from '../support/launcher.ts';

// The parts of this file build on each other: one installation is started behind TLS and used.
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-tls-'));
const dataDir = path.join(folder, 'data');
let files: CertificateFiles;
let app: Launched;
let origin: string;
let browser: Browser;

beforeAll(async () => {
  chmodSync(folder, 0o711);
  files = makeCertificate(folder);
  await ensureBuilt({ test: true, dataDir: folder, say: () => {} });
  app = await launch(dataDir, { TLS_CERT: files.cert, TLS_KEY: files.key });
  origin = `https://127.0.0.1:${app.port}`;
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    // a certificate of one's own, as on a phone that trusts it: a service worker is particular about that
    args: [
      '--no-sandbox',
      '--disable-dev-shm-usage',
      '--disable-gpu',
      '--ignore-certificate-errors',
    ],
  });
});
afterAll(async () => {
  await browser?.close();
  await app?.stop('SIGTERM');
  rmSync(folder, { recursive: true, force: true });
});

test('launcher opens HTTPS where people come, and nothing else beyond its own machine', () => {
  expect(app.output()).toContain(`Open   ${origin}/start?token=`);
  const addresses = listeningAddresses(app.processes());
  expect(addresses).toContain(`127.0.0.1:${app.port}`);
  expect(addresses.filter((address) => !address.startsWith('127.0.0.1:'))).toEqual([]);
});

test('a browser signs in, records, hears of it live and keeps the pocket page, all through TLS', async () => {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, locale: 'en-GB' });
  const page = await context.newPage();
  await page.goto(`${origin}/start?token=${app.token()}`);
  await page.getByLabel('Your name').fill('Ada Quill');
  await page.getByLabel('E-mail address').fill('ada@garage.example');
  await page.getByLabel('Password', { exact: true }).fill('a long enough password');
  await page.getByLabel('Name of the garage').fill('The Low Barn');
  await page.getByLabel('Time zone of the garage').fill('Europe/London');
  await page
    .getByRole('button', { name: /make|create|open/i })
    .last()
    .click();
  await page.waitForURL(/\/g\/[\da-f-]{36}/);
  const cookies = await context.cookies();
  const session = cookies.find(({ name }) => name.includes('session_token'));
  expect(session).toMatchObject({ secure: true, httpOnly: true });

  // written by another client, seen here without a reload: the live line came through
  const garageId = /\/g\/([\da-f-]{36})/.exec(page.url())?.[1] ?? '';
  await page.goto(`${origin}/g/${garageId}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const api = apiOf(page.request, origin);
  await api.mutate<Written>('car.add', {
    garageId,
    commandId: crypto.randomUUID(),
    carId: crypto.randomUUID(),
    car: { name: 'Tarnfell Corvo', unit: 'km', profile: {} },
  });
  await page.getByRole('link', { name: 'Tarnfell Corvo' }).first().waitFor({ timeout: 20_000 });

  await page.goto(`${origin}/pocket`);
  await page.getByRole('button', { name: 'Oil check', exact: true }).waitFor();
  await eventually('the pocket page to be kept', () =>
    page.evaluate<boolean>(`(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return Boolean(registration?.active && (await caches.match('/pocket')));
    })()`),
  );
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('button', { name: 'Oil check', exact: true }).waitFor();
  await context.close();
});

test('a request is answered as one over HTTPS, whatever it claims', async () => {
  const status = await new Promise<{ code: number; cookie: string }>((resolve, reject) => {
    const body = JSON.stringify({
      email: 'ada@garage.example',
      password: 'a long enough password',
    });
    const headers = {
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(body),
      origin,
      'x-forwarded-proto': 'http',
    };
    const options = { host: '127.0.0.1', port: app.port, rejectUnauthorized: false, headers };
    const request = https.request(
      { ...options, path: '/api/auth/sign-in/email', method: 'POST' },
      (answer) => {
        answer.resume();
        const cookie = (answer.headers['set-cookie'] ?? []).join('; ');
        answer.once('end', () => resolve({ code: answer.statusCode ?? 0, cookie }));
      },
    );
    request.once('error', reject);
    request.end(body);
  });
  expect(status.code).toBe(200);
  expect(status.cookie).toMatch(/Secure/);
});

test('launcher says what is wrong with a certificate, and starts nothing', async () => {
  const words = path.join(folder, 'words.pem');
  writeFileSync(words, 'nothing of the kind');
  const port = String(await freePort());
  const refused = (env: Record<string, string>) =>
    launch(path.join(folder, 'refused'), { PORT: port, ...env }).then(
      () => 'it started',
      (error: Error) => error.message,
    );
  expect(await refused({ TLS_CERT: files.cert })).toContain('TLS_CERT is set and TLS_KEY is not');
  expect(await refused({ TLS_CERT: words, TLS_KEY: files.key })).toContain('holds no certificate');
});

test('SIGTERM stops the door as well, with a request that is never sent to its end', async () => {
  const line = https.request({
    host: '127.0.0.1',
    port: app.port,
    path: '/api/trpc/entry.record',
    method: 'POST',
    headers: { 'content-type': 'application/json', 'content-length': 10 },
    rejectUnauthorized: false,
    agent: new https.Agent({ keepAlive: true }),
  });
  line.on('error', () => {});
  await new Promise((sent) => line.write('{', sent));
  const processes = app.processes();
  // a door that waited for the rest would stand for minutes, and `stop` gives up before
  const { code } = await app.stop('SIGTERM');
  expect([code, processes.filter(isAlive)]).toEqual([0, []]);
});
