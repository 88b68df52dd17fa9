import http from 'node:http';
import type { AddressInfo } from 'node:net';
import { addressPolicyOf, type WorkerOptions } from '@quartermark/jobs/worker';
import { verifySignature } from '@quartermark/post';
import { simpleParser } from 'mailparser';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS, clockAt, TEST_DAY } from '../support/jobs-worker.ts';
import { MailServerProcess, type Turn } from '../support/mail-server.ts';
import { HOOK_SECRET, ThingsToPost, UNSUBSCRIBE_SECRET } from '../support/things-to-post.ts';

const TO = 'owner@example.net';
const NOW_S = Date.parse(TEST_DAY) / 1000;

describe.each(BACKENDS)('the post', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    let things: ThingsToPost;
    let server: MailServerProcess | null = null;
    let receiver: http.Server | null = null;

    beforeAll(async () => {
      bench = await JobsBench.open('jobs_post', backend);
      things = new ThingsToPost(bench.database, bench.garage);
    });
    afterEach(async () => {
      await bench.stopWorkers();
      await server?.stop();
      server = null;
      receiver?.closeAllConnections();
      receiver?.close();
    });
    afterAll(async () => {
      await things?.close();
      await bench?.close();
    });

    /** A mail server that the garage uses. */
    async function mailServer(...plan: Turn[]): Promise<MailServerProcess> {
      server = await MailServerProcess.start({ plan });
      await things.setPost({ port: server.port });
      return server;
    }
    const start = (more: Partial<WorkerOptions> = {}, places = '127.0.0.0/8') => {
      const { port } = (receiver?.address() as AddressInfo | null) ?? { port: 1 };
      const ports = `smtp:${server?.port ?? 1}, webhook:${port}`;
      return bench.start({ policy: addressPolicyOf(places, ports), ...more });
    };
    const settled = (id: string) =>
      eventually('the delivery to be settled', async () => {
        const stands = await things.stands(id);
        return stands.words !== null && stands;
      });

    test('delivers a letter once, with both parts as they were composed', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      const worker = await start();
      expect(await settled(id)).toEqual({
        state: 'delivered',
        tries: 1,
        words: '250 kept as no. 7',
        answerLost: false,
        dueAt: null,
      });
      await things.passTime('1 day');
      await worker.reconcile();
      expect(letters).toHaveLength(1);
      expect(letters[0]).toMatchObject({ from: 'garage@house.test', to: [TO] });
      const raw = letters[0]?.mail ?? Buffer.alloc(0);
      const mail = await simpleParser(raw);
      expect(mail).toMatchObject({
        subject: 'Overdue: engine oil – Grey wagon',
        messageId: `<letter.${id}@garage.example>`,
        date: new Date('2026-03-10T05:00:00Z'),
      });
      expect(mail.text).toContain('▲ Overdue. Grey wagon: engine oil.');
      expect(mail.html).toContain('<p>▲ Overdue. Grey wagon: engine oil.</p>');
      const headers = raw.toString('latin1').replace(/\r\n[ \t]/g, ' ');
      expect(headers).toContain(
        `List-Unsubscribe: <https://garage.example/api/unsubscribe/${UNSUBSCRIBE_SECRET}>`,
      );
    });

    test('offers no unsubscribing where the house is not open by HTTPS', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      await start({ origin: 'http://127.0.0.1:3000' });
      expect(await settled(id)).toMatchObject({ state: 'delivered' });
      expect(letters[0]?.mail.toString('latin1')).not.toContain('List-Unsubscribe');
    });

    test('sends a letter again whose answer was lost, byte for byte, and says that a copy may have come', async () => {
      const mail = await mailServer('loseAnswer', 'accept');
      const id = await things.letter(TO);
      const worker = await start();
      const lost = await settled(id);
      expect(lost).toMatchObject({ state: 'waiting', tries: 1, answerLost: true });
      // one minute, a fifth more or less
      const waitS = (lost.dueAt?.getTime() ?? 0) / 1000 - NOW_S;
      expect(waitS).toBeGreaterThanOrEqual(48);
      expect(waitS).toBeLessThanOrEqual(72);
      await worker.reconcile();
      expect(mail.letters).toHaveLength(1);
      await things.passTime('72 seconds');
      await worker.reconcile();
      const [first, second] = await mail.heard(2);
      expect(second?.mail.equals(first?.mail ?? Buffer.alloc(0))).toBe(true);
      expect((await simpleParser(second?.mail ?? '')).messageId).toBe(
        `<letter.${id}@garage.example>`,
      );
      await eventually(
        'the second try',
        async () => (await things.stands(id)).state === 'delivered',
      );
      expect(await things.stands(id)).toMatchObject({ tries: 2, answerLost: true, dueAt: null });
    });

    test('waits longer after each time a server is busy, and keeps its words', async () => {
      await mailServer('busy', 'busy');
      const id = await things.letter(TO);
      const worker = await start();
      expect(await settled(id)).toMatchObject({
        state: 'waiting',
        tries: 1,
        words: '451 4.3.2 Busy, come back later',
        answerLost: false,
      });
      await things.passTime('72 seconds');
      await worker.reconcile();
      const twice = await eventually('the second try', async () => {
        const stands = await things.stands(id);
        return stands.tries === 2 && stands.words !== null && stands;
      });
      expect(twice.state).toBe('waiting');
      expect((twice.dueAt?.getTime() ?? 0) / 1000 - NOW_S).toBeGreaterThanOrEqual(240);
    });

    test('gives up what a server refuses for good, with its words', async () => {
      const { letters } = await mailServer();
      const id = await things.letter('nobody@example.net');
      await start();
      expect(await settled(id)).toEqual({
        state: 'givenUp',
        tries: 1,
        words: '550 5.1.1 <(address)>: no such box',
        answerLost: false,
        dueAt: null,
      });
      expect(letters).toEqual([]);
    });

    test('gives up after eight tries, with the last words', async () => {
      await mailServer();
      const id = await things.letter('later@example.net');
      const worker = await start();
      for (let tries = 1; tries < 8; tries += 1) {
        await eventually(`try ${tries}`, async () => {
          const stands = await things.stands(id);
          return stands.tries === tries && stands.words !== null;
        });
        expect(await things.stands(id)).toMatchObject({ state: 'waiting' });
        await things.passTime('10 hours');
        await worker.reconcile();
      }
      await eventually('the end', async () => (await things.stands(id)).state === 'givenUp');
      expect(await things.stands(id)).toMatchObject({ tries: 8, words: '450 4.2.1 Greylisted' });
    });

    test('says so where the garage has no mail server any more', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      await things.setPost(null);
      await start();
      expect(await settled(id)).toMatchObject({
        state: 'givenUp',
        words: 'The garage has no mail server any more.',
      });
      expect(letters).toEqual([]);
    });

    test('sends nothing to whoever wants no mail any more', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      await things.wish({ mail: false });
      await start();
      const stands = await settled(id);
      await things.wish({ mail: true });
      expect(stands).toMatchObject({
        state: 'givenUp',
        words: 'Its reader wants no letters by mail any more.',
      });
      expect(letters).toEqual([]);
    });

    test('refuses this machine itself without leave', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      await start({}, '');
      expect(await settled(id)).toMatchObject({
        state: 'givenUp',
        words: expect.stringContaining('127.0.0.1 leads to this machine itself.'),
      });
      expect(letters).toEqual([]);
    });

    test('delivers a test letter that somebody asks for, woken by that alone', async () => {
      const { letters } = await mailServer();
      await start();
      const id = await things.test(TO);
      expect(await settled(id)).toMatchObject({ state: 'delivered' });
      const mail = await simpleParser(letters[0]?.mail ?? '');
      expect(mail).toMatchObject({ subject: 'Test letter from Quartermark' });
    });

    test('posts a webhook that its receiver can verify', async () => {
      const asked: { headers: http.IncomingHttpHeaders; body: Buffer }[] = [];
      receiver = http.createServer((request, response) => {
        const parts: Buffer[] = [];
        request.on('data', (part: Buffer) => parts.push(part));
        request.once('end', () => {
          asked.push({ headers: request.headers, body: Buffer.concat(parts) });
          response.end('got it');
        });
      });
      await new Promise<void>((resolve) => receiver?.listen(0, '127.0.0.1', resolve));
      const { port } = receiver.address() as AddressInfo;
      await things.setPost(null, `http://127.0.0.1:${port}/in`);
      const payload = { date: '2026-03-10', lines: ['Grüner Kombi: Öl'] };
      const id = await things.hook(payload);
      await start();
      expect(await settled(id)).toMatchObject({ state: 'delivered', words: '200 got it' });
      const [only] = asked;
      expect(JSON.parse(only?.body.toString() ?? '')).toEqual(payload);
      const headers = {
        timestamp: only?.headers['quartermark-timestamp'] as string,
        signature: only?.headers['quartermark-signature'] as string,
      };
      const body = only?.body ?? Buffer.alloc(0);
      expect(verifySignature(HOOK_SECRET, headers, body, NOW_S + 10)).toBe('genuine');
      expect(
        verifySignature(HOOK_SECRET, headers, Buffer.concat([body, Buffer.from(' ')]), NOW_S + 10),
      ).toBe('forged');
    });

    test('writes a try down before it sends anything', async () => {
      const { letters } = await mailServer();
      const id = await things.letter(TO);
      let seen: unknown = null;
      await start({
        reached: async (point) => {
          if (point === 'claimed') seen = { ...(await things.stands(id)), sent: letters.length };
        },
      });
      await settled(id);
      // the lease is ten minutes
      const dueAt = new Date((NOW_S + 600) * 1000);
      const waiting = { state: 'waiting', tries: 1, words: null, answerLost: false };
      expect(seen).toEqual({ ...waiting, dueAt, sent: 0 });
    });

    test('sends one letter though two workers find it', async () => {
      const { letters } = await mailServer();
      let claims = 0;
      const reached = async (point: string) => {
        if (point === 'claimed') claims += 1;
      };
      const [one, two] = await Promise.all([start({ reached }), start({ reached })]);
      const ids: string[] = [];
      for (let at = 0; at < 6; at += 1) ids.push(await things.letter(TO));
      await Promise.all([one.reconcile(), two.reconcile(), one.reconcile(), two.reconcile()]);
      for (const id of ids) expect(await settled(id)).toMatchObject({ tries: 1 });
      await Promise.all([one.reconcile(), two.reconcile()]);
      expect(claims).toBe(6);
      const sent = await Promise.all(letters.map(({ mail }) => simpleParser(mail)));
      const wanted = ids.map((id) => `<letter.${id}@garage.example>`);
      expect(new Set(sent.map(({ messageId }) => messageId))).toEqual(new Set(wanted));
      expect(sent).toHaveLength(ids.length);
    });

    test('leaves alone what is not due yet, until it is', async () => {
      const { letters } = await mailServer();
      const clock = clockAt('2026-03-10T04:59:59Z');
      const id = await things.letter(TO);
      const worker = await start({ clock });
      await worker.reconcile();
      expect(await things.stands(id)).toMatchObject({ tries: 0 });
      clock.set('2026-03-10T05:00:00Z');
      await worker.reconcile();
      expect(await settled(id)).toMatchObject({ state: 'delivered' });
      expect(letters).toHaveLength(1);
    });
  });
});
