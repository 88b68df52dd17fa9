import { randomUUID } from 'node:crypto';
import { capped } from '@quartermark/api/server';
import { fetchRequestHandler } from '@trpc/server/adapters/fetch';
import superjson from 'superjson';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, ORIGIN } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api door');
});
afterAll(() => at.close());

/** One call over HTTP, through the same door as in the web process. */
async function call(path: string, input: unknown, cookie = at.cookie): Promise<Response> {
  const request = new Request(`${ORIGIN}/api/trpc/${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: JSON.stringify(superjson.serialize(input)),
  });
  const req = await capped(request);
  if (req instanceof Response) return req;
  const { appRouter: router } = at.api;
  const createContext = () => at.api.createContext(req);
  return fetchRequestHandler({ endpoint: '/api/trpc', req, router, createContext });
}

type Failed = { error: { json: { message: string; data: Record<string, unknown> } } };

test('a refusal travels as data.refusal, under its own code, without a stack', async () => {
  const entry = at.draft('note', { note: 'x', on: '2030-01-01' });
  const response = await call('entry.record', {
    garageId: at.garageId,
    commandId: randomUUID(),
    entry,
  });
  expect(response.status).toBe(422);
  const { error } = (await response.json()) as Failed;
  expect(error.json.data).toMatchObject({
    code: 'UNPROCESSABLE_CONTENT',
    refusal: { code: 'afterTomorrow', field: 'entry.on' },
  });
  expect(error.json.data).not.toHaveProperty('stack');
});

test('a body of 1.1 MB is answered with 413 and writes nothing', async () => {
  const entry = at.draft('note', { note: 'x'.repeat(1_153_434) });
  const response = await call('entry.record', {
    garageId: at.garageId,
    commandId: randomUUID(),
    entry,
  });
  expect(response.status).toBe(413);
  expect(await response.json()).toMatchObject({ refusal: { code: 'tooLarge' } });
});

test('an id that is none is refused as badInput with its path', async () => {
  const response = await call('work.retry', {
    garageId: 'seven',
    commandId: randomUUID(),
    carId: at.carId,
  });
  expect(response.status).toBe(400);
  const { error } = (await response.json()) as Failed;
  expect(error.json.data.refusal).toMatchObject({ code: 'badInput', field: 'garageId' });
});

test('what fails behind the door is shown as a reference that the log explains', async () => {
  const other = await home('api door broken');
  await other.api.close();
  const error = await other.me.garage
    .overview({ garageId: other.garageId })
    .catch((reason) => reason);
  expect(error.code).toBe('INTERNAL_SERVER_ERROR');
  expect(error.message).toMatch(/server could not do its part/);
  const reference = error.message.match(/for (\w{8})\./)?.[1];
  expect(reference).toBeDefined();
  const line = other.logged.find(({ fields }) => fields.reference === reference);
  expect(line?.fields.err).toBeInstanceOf(Error);
  expect(error.message).not.toContain(String(line?.fields.err));
  await other.database.drop();
});
