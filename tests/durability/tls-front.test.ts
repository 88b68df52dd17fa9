import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import http from 'node:http';
import https from 'node:https';
import type { AddressInfo } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { certificateTrouble, readCertificate } from '../../apps/launcher/src/tls/certificate.ts';
import { type Front, startFront } from '../../apps/launcher/src/tls/front.ts';
import { type CertificateFiles, makeCertificate } from '../support/certificate.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-tls-front-'));
let files: CertificateFiles;
let inner: http.Server;
let front: Front | null = null;
let port: number;

beforeAll(() => {
  files = makeCertificate(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(async () => {
  await front?.close();
  inner?.closeAllConnections();
  inner?.close();
  front = null;
});

async function stand(answer: http.RequestListener): Promise<void> {
  inner = http.createServer(answer).listen(0, '127.0.0.1');
  await once(inner, 'listening');
  const certificate = readCertificate({ certFile: files.cert, keyFile: files.key });
  if (certificate === null) throw new Error('no certificate');
  port = await freePort();
  const { port: innerPort } = inner.address() as AddressInfo;
  front = await startFront(certificate, { host: '127.0.0.1', port }, innerPort);
}

const agent = new https.Agent({ keepAlive: true, maxSockets: 1 });
const ask = (options: https.RequestOptions = {}) =>
  https.request({
    host: '127.0.0.1',
    port,
    agent,
    ca: readFileSync(files.cert),
    ...options,
  });

async function answerOf(request: http.ClientRequest): Promise<http.IncomingMessage> {
  const [answer] = (await once(request, 'response')) as [http.IncomingMessage];
  return answer;
}

async function textOf(answer: http.IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of answer) parts.push(part as Buffer);
  return Buffer.concat(parts).toString();
}

test('startFront() says anew where a request came from, and keeps one connection for several', async () => {
  await stand((request, response) => response.end(JSON.stringify(request.headers)));
  const sockets = new Set<unknown>();
  for (const path of ['/a', '/b']) {
    const request = ask({ path, headers: { 'x-forwarded-proto': 'http', forwarded: 'for=evil' } });
    request.once('socket', (socket) => sockets.add(socket));
    request.end();
    const headers = JSON.parse(await textOf(await answerOf(request)));
    expect(headers).toMatchObject({
      host: `127.0.0.1:${port}`,
      'x-forwarded-proto': 'https',
      'x-forwarded-host': `127.0.0.1:${port}`,
      'x-forwarded-for': '127.0.0.1',
    });
    expect(headers.forwarded).toBeUndefined();
  }
  expect(sockets.size).toBe(1);
});

test('startFront() hands a body on while it is being sent', async () => {
  let arrived = '';
  let onPart = () => {};
  await stand((request, response) => {
    request.on('data', (part) => {
      arrived += part;
      onPart();
    });
    request.on('end', () => response.end(arrived));
  });
  const request = ask({ method: 'POST' });
  const first = new Promise<void>((resolve) => {
    onPart = resolve;
  });
  request.write('first');
  await first;
  expect(arrived).toBe('first');
  request.end(' second');
  expect(await textOf(await answerOf(request))).toBe('first second');
});

test('startFront() hands on each event as it comes, and hangs up when the listener does', async () => {
  let line: http.ServerResponse | null = null;
  const hungUp = new Promise<void>((resolve) => {
    void stand((_request, response) => {
      line = response;
      response.once('close', resolve);
      response.writeHead(200, { 'content-type': 'text/event-stream' });
      response.flushHeaders();
    }).then(() => ask().end());
  });
  await expect.poll(() => line !== null).toBe(true);
  // a line of its own, so that its first event can be waited for
  const request = ask({ agent: false });
  line = null;
  request.end();
  const answer = await answerOf(request);
  expect(answer.headers['content-type']).toBe('text/event-stream');
  await expect.poll(() => line !== null).toBe(true);
  const event = once(answer, 'data');
  (line as unknown as http.ServerResponse).write('data: 1\n\n');
  expect(String((await event)[0])).toBe('data: 1\n\n');
  const closed = once(line as unknown as http.ServerResponse, 'close');
  request.destroy();
  await closed;
  await front?.close();
  front = null;
  await hungUp;
});

test('startFront() says so while the web app does not answer', async () => {
  await stand((_request, response) => response.destroy());
  const request = ask({ agent: false });
  request.end();
  const answer = await answerOf(request);
  expect(answer.statusCode).toBe(502);
  expect(await textOf(answer)).toContain('does not answer at the moment');
});

test('readCertificate() names the variable, the file and the mend', () => {
  const other = makeCertificate(folder, 'other');
  const words = path.join(folder, 'words.pem');
  writeFileSync(words, 'nothing of the kind');
  const read = (certFile: string, keyFile: string) => () => readCertificate({ certFile, keyFile });
  const missing = path.join(folder, 'missing.pem');
  expect(read(missing, files.key)).toThrow(`TLS_CERT is ${missing}: there is no such file.`);
  expect(read(words, files.key)).toThrow(`TLS_CERT is ${words}: it holds no certificate.`);
  expect(read(files.cert, words)).toThrow(`TLS_KEY is ${words}: it holds no private key`);
  expect(read(files.cert, other.key)).toThrow('does not belong to TLS_CERT');
  expect(readCertificate(null)).toBeNull();
});

test('certificateTrouble() speaks of a certificate that ran out', () => {
  const certificate = { cert: readFileSync(files.cert), key: readFileSync(files.key) };
  expect(certificateTrouble(certificate, new Date())).toBeNull();
  const later = new Date(Date.now() + 3 * 86_400_000);
  expect(certificateTrouble(certificate, later)).toContain('ran out on');
});
