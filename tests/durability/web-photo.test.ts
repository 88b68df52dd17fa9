import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ensureBuilt } from '../../apps/launcher/src/build.ts';
import { type Home, home } from '../support/api-house.ts';
import { startWeb, type WebProcess } from '../support/web-process.ts';

const MB = 1024 * 1024;
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-web-photo-'));
let at: Home;
let web: WebProcess;

beforeAll(async () => {
  await ensureBuilt({ test: true, dataDir: folder, say: () => {} });
  at = await home('web_photo');
  web = await startWeb(at);
});
afterAll(async () => {
  await web?.kill();
  await at?.close();
  rmSync(folder, { recursive: true, force: true });
});

const address = (photoId: string, query = '') =>
  `${web.origin}/api/photo/${at.garageId}/${photoId}${query}`;

/** Noise does not compress, so that the file is as large as a camera's. */
async function largePhoto(): Promise<Buffer> {
  const noise = { type: 'gaussian', mean: 128, sigma: 60 } as const;
  const create = { width: 2800, height: 2100, channels: 3, noise, background: '#808080' } as const;
  return sharp({ create }).jpeg({ quality: 97 }).toBuffer();
}

const post = (photoId: string, body: Buffer, more: Record<string, string> = {}) =>
  fetch(address(photoId), {
    method: 'POST',
    headers: { cookie: at.cookie, origin: web.origin, 'content-type': 'image/jpeg', ...more },
    body: new Uint8Array(body),
  });

test('a photo larger than what the proxy keeps of a body arrives whole, and comes back', async () => {
  const sent = await largePhoto();
  expect(sent.length).toBeGreaterThan(3 * MB);
  const photoId = randomUUID();
  const response = await post(photoId, sent);
  expect(await response.json()).toEqual({ id: photoId, width: 2560, height: 1920 });
  expect(response.status).toBe(200);
  const small = await fetch(address(photoId, '?small=1'), { headers: { cookie: at.cookie } });
  expect(Object.fromEntries(small.headers)).toMatchObject({
    'content-type': 'image/jpeg',
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'cache-control': 'private, max-age=31536000, immutable',
  });
  const { width, height } = await sharp(Buffer.from(await small.arrayBuffer())).metadata();
  expect([width, height]).toEqual([320, 240]);
  expect((await fetch(address(photoId))).status).toBe(401);
});

test('a page of elsewhere, and another name for this machine, are turned away', async () => {
  const bytes = await sharp(await largePhoto())
    .resize(40)
    .jpeg()
    .toBuffer();
  const photoId = randomUUID();
  expect((await post(photoId, bytes, { origin: 'http://elsewhere.example' })).status).toBe(403);
  expect(await knock(photoId, { host: 'elsewhere.example' })).toBe(421);
  expect((await fetch(address(photoId), { headers: { cookie: at.cookie } })).status).toBe(404);
});

/** `fetch` does not let one choose the host. */
function knock(photoId: string, headers: Record<string, string>): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const request = http.get(address(photoId), { headers: { cookie: at.cookie, ...headers } });
    request.once('response', (response) => {
      response.resume();
      resolve(response.statusCode);
    });
    request.once('error', reject);
  });
}

test('40 MB without a stated length are refused while they are still being sent', async () => {
  const { status, said, given } = await pour(randomUUID(), 40 * MB);
  expect(status).toBe(413);
  expect(said).toContain('A photo may have 12 MB');
  expect(given).toBeLessThan(30 * MB);
});

/** Sends piece by piece, as the other side takes them, until it answers or all is sent. */
function pour(photoId: string, bytes: number) {
  return new Promise<{ status: number | undefined; said: string; given: number }>(
    (resolve, reject) => {
      const headers = { cookie: at.cookie, origin: web.origin, 'content-type': 'image/jpeg' };
      const request = http.request(address(photoId), { method: 'POST', headers });
      const piece = Buffer.alloc(MB, 0xff);
      let given = 0;
      let answered = false;
      const give = () => {
        if (answered) return;
        if (given >= bytes) return void request.end();
        given += piece.length;
        // a breath between two pieces, as a line has it
        request.write(piece, () => setTimeout(give, 20));
      };
      request.once('response', (response) => {
        answered = true;
        let said = '';
        response.on('data', (data) => {
          said += data;
        });
        response.once('end', () => {
          resolve({ status: response.statusCode, said, given });
          request.destroy();
        });
      });
      request.once('error', reject);
      give();
    },
  );
}
