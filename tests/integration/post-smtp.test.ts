import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {
  AddressPolicy,
  type Letter,
  type MailServer,
  readAllowedPlaces,
  readAllowedPorts,
  sendLetter,
  testLetter,
} from '@quartermark/post';
import { type ParsedMail, simpleParser } from 'mailparser';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { type CertificateFiles, makeCertificate } from '../support/certificate.ts';
import { type MailServerIs, MailServerProcess } from '../support/mail-server.ts';

const HOST = 'mail.house.test';
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-post-'));
const files: CertificateFiles = makeCertificate(folder, 'mail', `DNS:${HOST}`);
const trustedAuthority = readFileSync(files.cert, 'utf8');

let server: MailServerProcess | null = null;
afterEach(async () => {
  await server?.stop();
  server = null;
});
afterAll(() => rmSync(folder, { recursive: true }));

async function sender(is: MailServerIs = {}, more: Partial<MailServer> = {}, places = HOST) {
  server = await MailServerProcess.start(is);
  const { port } = server;
  const policy = new AddressPolicy(
    readAllowedPlaces(places),
    readAllowedPorts(`smtp:${port}`),
    async () => ['127.0.0.1'],
  );
  const to: MailServer = { host: HOST, port, encryption: 'ifOffered', ...more };
  return (letter: Letter, answerMs?: number) => sendLetter(policy, to, letter, answerMs);
}

async function read(at = 0): Promise<ParsedMail & { raw: string }> {
  const letters = (await server?.heard(at + 1)) ?? [];
  const mail = letters[at]?.mail ?? Buffer.alloc(0);
  return Object.assign(await simpleParser(mail), { raw: mail.toString('latin1') });
}

const LETTER: Letter = {
  from: { name: 'Garage Überlauf, Tor 3', address: 'garage@house.test' },
  to: { name: 'Zoë "Żaba" Ø', address: 'owner@example.net' },
  subject: 'Overdue: brake fluid – grüner Kombi',
  text: `.\n..\n.hidden\n${'long '.repeat(600)}\n${'x'.repeat(3000)}\nEnde gut – ö\n`,
  html: `<p>${'long '.repeat(600)}</p>\n.\n<p>Ende gut – ö</p>\n`,
  messageId: '<night.2026-06-15.7@house.test>',
  date: new Date('2026-06-15T04:00:00Z'),
  unsubscribeUrl: `https://house.test/unsubscribe/${'k'.repeat(43)}`,
  headers: { 'X-Quartermark-Night': '2026-06-15' },
};

describe('a letter that arrives', () => {
  test('has both parts, names, dots and long lines as they were written', async () => {
    const send = await sender();
    expect(await send(LETTER)).toEqual({ is: 'accepted', said: '250 kept as no. 7' });
    const mail = await read();
    expect(mail.text).toBe(LETTER.text);
    expect(mail.html).toBe(LETTER.html);
    expect(mail.subject).toBe(LETTER.subject);
    expect(mail.from?.value).toEqual([LETTER.from]);
    expect(mail.to).toMatchObject({ value: [LETTER.to] });
    expect(mail.messageId).toBe(LETTER.messageId);
    expect(mail.date).toEqual(LETTER.date);
    expect(server?.letters[0]).toMatchObject({
      from: 'garage@house.test',
      to: ['owner@example.net'],
    });
    // RFC 5322, 2.1.1: 998 characters at most, and nothing but ASCII
    const lines = mail.raw.split('\r\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(998);
    expect(mail.raw).toMatch(/^[\t\r\n\x20-\x7E]*$/);
    // RFC 2046, 5.1.4: the better part comes last
    expect(mail.raw.indexOf('text/plain')).toBeLessThan(mail.raw.indexOf('text/html'));
  });

  test('offers to unsubscribe with one press, and asks for no answer', async () => {
    const send = await sender();
    await send(LETTER);
    const { raw } = await read();
    const unfolded = `\r\n${raw}`.replace(/\r\n[ \t]/g, ' ');
    expect(unfolded).toContain(`\r\nList-Unsubscribe: <${LETTER.unsubscribeUrl}>\r\n`);
    expect(unfolded).toContain('\r\nList-Unsubscribe-Post: List-Unsubscribe=One-Click\r\n');
    expect(unfolded).toContain('\r\nAuto-Submitted: auto-generated\r\n');
    expect(unfolded).toContain('\r\nX-Quartermark-Night: 2026-06-15\r\n');
  });

  test('may be a test letter, which offers nothing to unsubscribe from', async () => {
    const send = await sender();
    const { from, to, date } = LETTER;
    await send(testLetter({ from, to, date, messageId: '<test.1@house.test>' }));
    const mail = await read();
    expect(mail.subject).toBe('Test letter from Quartermark');
    expect(mail.text).toContain('reach this mailbox');
    expect(mail.headers.has('list')).toBe(false);
  });
});

describe('a letter that is sent again', () => {
  test('is the same, byte for byte, after the server was busy', async () => {
    const send = await sender({ plan: ['busy', 'accept'] });
    expect(await send(LETTER)).toEqual({
      is: 'tryAgain',
      by: 'server',
      said: '451 4.3.2 Busy, come back later',
      answerLost: false,
    });
    expect((await send(LETTER)).is).toBe('accepted');
    const [first, second] = (await server?.heard(2)) ?? [];
    expect(second?.mail.equals(first?.mail ?? Buffer.alloc(0))).toBe(true);
    expect((await read(1)).messageId).toBe(LETTER.messageId);
  });

  test('has the same Message-ID where the answer was lost, which is said', async () => {
    const send = await sender({ plan: ['loseAnswer', 'accept'] });
    expect(await send(LETTER)).toMatchObject({ is: 'tryAgain', by: 'network', answerLost: true });
    expect((await send(LETTER)).is).toBe('accepted');
    expect((await read(0)).messageId).toBe(LETTER.messageId);
    expect((await read(1)).messageId).toBe(LETTER.messageId);
  });

  test('is not waited for without end', async () => {
    const send = await sender({ plan: ['silent'] });
    expect(await send(LETTER, 300)).toEqual({
      is: 'tryAgain',
      by: 'network',
      said: 'The server did not answer in time.',
      answerLost: true,
    });
  });

  test('may have been greylisted, with nothing handed over', async () => {
    const send = await sender();
    const later = { ...LETTER, to: { address: 'later@example.net' } };
    expect(await send(later)).toMatchObject({ is: 'tryAgain', by: 'server', answerLost: false });
    expect(server?.letters).toEqual([]);
  });

  test('finds nobody listening', async () => {
    const send = await sender();
    await server?.stop();
    expect(await send(LETTER)).toEqual({
      is: 'tryAgain',
      by: 'network',
      said: 'The server took no connection.',
      answerLost: false,
    });
  });
});

describe('a letter that is refused for good', () => {
  test('says why in clean words, without the address', async () => {
    const send = await sender({ plan: ['full'] });
    const unknown = { ...LETTER, to: { address: 'nobody@example.net' } };
    expect(await send(unknown)).toEqual({
      is: 'refused',
      by: 'server',
      said: '550 5.1.1 <(address)>: no such box',
    });
    expect(await send(LETTER)).toEqual({
      is: 'refused',
      by: 'server',
      said: '552 5.2.2 Mailbox of (address) is full now',
    });
  });

  test('is never handed to a host that nobody allowed', async () => {
    const send = await sender({}, {}, 'other.test');
    expect(await send(LETTER)).toMatchObject({ is: 'refused', by: 'policy' });
    expect(server?.letters).toEqual([]);
  });
});

describe('encryption', () => {
  test.each([
    ['starttls', 'required'],
    ['implicit', 'implicit'],
  ] as const)('by %s is checked against the name, not the address', async (offers, encryption) => {
    const is: MailServerIs = { encryption: offers, ...files, password: 'let me in, please' };
    const login = { user: 'garage', password: 'let me in, please' };
    const send = await sender(is, { encryption, trustedAuthority, login });
    expect((await send(LETTER)).is).toBe('accepted');
    expect(server?.letters[0]).toMatchObject({ encrypted: true, servername: HOST });
  });

  test('under a certificate that nobody vouches for is none', async () => {
    const send = await sender({ encryption: 'implicit', ...files }, { encryption: 'implicit' });
    expect(await send(LETTER)).toEqual({
      is: 'tryAgain',
      by: 'network',
      said: 'The certificate of the server, or its encryption, is not one to be trusted.',
      answerLost: false,
    });
    expect(server?.letters).toEqual([]);
  });

  test('is not done without where a login is to be sent', async () => {
    const login = { user: 'garage', password: 'secret' };
    const send = await sender({ password: 'secret' }, { login });
    expect(await send(LETTER)).toMatchObject({ is: 'tryAgain', by: 'network' });
    expect(server?.letters).toEqual([]);
  });

  test('keeps a login out of what a server says of it', async () => {
    const login = { user: 'garage-7', password: 'opensesame' };
    const is: MailServerIs = { encryption: 'starttls', ...files, password: 'another' };
    const send = await sender(is, { encryption: 'required', trustedAuthority, login });
    expect(await send(LETTER)).toEqual({
      is: 'refused',
      by: 'server',
      said: '535 5.7.8 (secret) with (secret) is not known here',
    });
  });
});
