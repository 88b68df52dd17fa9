import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import http from 'node:http';
import https from 'node:https';
import type { AddressInfo } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import {
  AddressPolicy,
  postWebhook,
  readAllowedPlaces,
  readAllowedPorts,
  verifySignature,
} from '@quartermark/post';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { makeCertificate } from '../support/certificate.ts';

const HOST = 'hooks.house.test';
const SECRET = 'key-for-tests-only-0123456789abcdef';
const SENT_S = 1_781_496_000;
const LINES = { night: '2026-06-15', lines: ['Bremsflüssigkeit überfällig'] };

const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-post-'));
const files = makeCertificate(folder, 'hooks', `DNS:${HOST}`);
const certificate = { cert: readFileSync(files.cert, 'utf8'), key: readFileSync(files.key) };
afterAll(() => rmSync(folder, { recursive: true }));

let server: http.Server | null = null;
const asked: { headers: http.IncomingHttpHeaders; body: Buffer; url: string; host: unknown }[] = [];
afterEach(() => {
  server?.closeAllConnections();
  server?.close();
  asked.length = 0;
});

type Answer = (response: http.ServerResponse) => void;

/** A real server on 127.0.0.1 that answers so; and how to post to it, under its name. */
async function receiver(answer: Answer, { secure = true, places = HOST, trust = true } = {}) {
  const take: http.RequestListener = (request, response) => {
    const parts: Buffer[] = [];
    request.on('data', (part: Buffer) => parts.push(part));
    request.once('end', () => {
      const { servername } = request.socket as { servername?: string };
      const body = Buffer.concat(parts);
      asked.push({ headers: request.headers, body, url: request.url ?? '', host: servername });
      answer(response);
    });
  };
  server = secure ? https.createServer(certificate, take) : http.createServer(take);
  await new Promise<void>((resolve) => server?.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  let lookUps = 0;
  const policy = new AddressPolicy(
    readAllowedPlaces(places),
    readAllowedPorts(`webhook:${port}`),
    // whoever asked a second time would be led elsewhere
    async () => [lookUps++ === 0 ? '127.0.0.1' : '127.0.0.2'],
  );
  const url = `${secure ? 'https' : 'http'}://${HOST}:${port}/in?k=hidden`;
  const hook = { url, secret: SECRET, ...(trust && { trustedAuthority: certificate.cert }) };
  return (withinMs?: number) => postWebhook(policy, hook, LINES, SENT_S, withinMs);
}

const says =
  (status: number, body = '', headers: http.OutgoingHttpHeaders = {}): Answer =>
  (response) =>
    response.writeHead(status, headers).end(body);

describe('a webhook that is taken', () => {
  test('is JSON under its name, with a signature that the receiver can verify', async () => {
    const post = await receiver(says(200, 'got it'));
    expect(await post()).toEqual({ is: 'accepted', said: '200 got it' });
    const [only] = asked;
    expect(JSON.parse(only?.body.toString() ?? '')).toEqual(LINES);
    expect(only?.host).toBe(HOST);
    expect(only?.headers).toMatchObject({ 'content-type': 'application/json' });
    expect(only?.headers.host).toMatch(new RegExp(`^${HOST}:`));
    const headers = {
      timestamp: only?.headers['quartermark-timestamp'] as string,
      signature: only?.headers['quartermark-signature'] as string,
    };
    const body = only?.body.toString() ?? '';
    expect(verifySignature(SECRET, headers, body, SENT_S + 2)).toBe('genuine');
    expect(verifySignature(SECRET, headers, `${body} `, SENT_S + 2)).toBe('forged');
  });

  test('may be answered by any length: 200 characters are kept', async () => {
    const post = await receiver(says(200, `\u0007${'å'.repeat(5_000_000)}`));
    expect(await post()).toEqual({ is: 'accepted', said: `200 ${'å'.repeat(196)}` });
  });

  test('may go in the clear inside of a house whose operator said so', async () => {
    const post = await receiver(says(204), { secure: false });
    expect((await post()).is).toBe('accepted');
  });
});

describe('a webhook that is refused', () => {
  test.each([301, 302, 303, 307, 308])('follows no redirect by %i', async (status) => {
    const post = await receiver(says(status, '', { Location: '/elsewhere' }));
    expect(await post()).toMatchObject({ is: 'refused', by: 'server' });
    expect(asked.map(({ url }) => url)).toEqual(['/in?k=hidden']);
  });

  test('is sent to no inner address without leave, and none of it is sent', async () => {
    const post = await receiver(says(200), { places: '' });
    expect(await post()).toEqual({
      is: 'refused',
      by: 'policy',
      said: `${HOST} leads to this machine itself. Name a public host, or ask who runs this server to allow it (POST_ALLOW_PRIVATE).`,
    });
    expect(asked).toEqual([]);
  });

  test.each(['ftp://a.test', 'http://a.test', 'a.test', 'https://u:p@a.test', 'file:///etc/x'])(
    'goes nowhere by %s',
    async (url) => {
      const policy = new AddressPolicy(
        readAllowedPlaces(''),
        readAllowedPorts('webhook:80'),
        async () => ['1.1.1.1'],
      );
      const hook = { url, secret: SECRET };
      expect(await postWebhook(policy, hook, LINES, SENT_S)).toMatchObject({
        is: 'refused',
        by: 'policy',
      });
    },
  );

  test.each([400, 401, 404, 410])('for good is one answered %i', async (status) => {
    const post = await receiver(says(status, 'no'));
    expect(await post()).toEqual({ is: 'refused', by: 'server', said: `${status} no` });
  });
});

describe('a webhook to be tried again', () => {
  test.each([408, 425, 429, 500, 503])('is one answered %i', async (status) => {
    const post = await receiver(says(status, 'later', { 'Retry-After': '120' }));
    expect(await post()).toEqual({
      is: 'tryAgain',
      by: 'server',
      said: `${status} later`,
      answerLost: false,
      notBeforeS: 120,
    });
  });

  test('is one without an answer in time', async () => {
    const post = await receiver(() => undefined);
    expect(await post(300)).toEqual({
      is: 'tryAgain',
      by: 'network',
      said: 'The server did not answer in time.',
      answerLost: true,
    });
  });

  test('is none whose status came but whose words drag on', async () => {
    const post = await receiver((response) => response.writeHead(200).write('so far'));
    expect(await post(500)).toEqual({ is: 'accepted', said: '200 so far' });
  });

  test('is one under a certificate that nobody vouches for', async () => {
    const post = await receiver(says(200), { trust: false });
    expect(await post()).toMatchObject({ is: 'tryAgain', by: 'network', answerLost: false });
    expect(asked).toEqual([]);
  });
});
