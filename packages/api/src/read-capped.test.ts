import { expect, test } from 'vitest';
import { BODY_BYTES_MAX, capped, readCapped } from './read-capped.ts';

const request = (body: NonNullable<RequestInit['body']>, headers: Record<string, string> = {}) =>
  new Request('http://127.0.0.1/', {
    method: 'POST',
    body,
    headers,
    duplex: 'half',
  } as RequestInit);

/** A body that comes in pieces and counts how many were taken. */
function pieces(count: number, bytes: number) {
  let taken = 0;
  const body = new ReadableStream<Uint8Array>({
    pull(controller) {
      if (taken === count) return controller.close();
      taken += 1;
      controller.enqueue(new Uint8Array(bytes));
    },
  });
  return { body, taken: () => taken };
}

test('readCapped() gives a body of exactly the cap whole', async () => {
  expect(await readCapped(request(new Uint8Array(16)), 16)).toHaveLength(16);
});

test('readCapped() gives up one byte beyond the cap', async () => {
  await expect(readCapped(request(new Uint8Array(17)), 16)).rejects.toMatchObject({
    refusal: { code: 'tooLarge' },
  });
});

test('readCapped() stops reading a stream that states no length as soon as it is too large', async () => {
  const stream = pieces(1000, 1024);
  await expect(readCapped(request(stream.body), 4096)).rejects.toThrow('larger than 4 KB');
  expect(stream.taken()).toBeLessThan(10);
});

test('capped() answers 413 with the refusal for a body of 1.1 MB', async () => {
  const answer = await capped(request('x'.repeat(Math.round(BODY_BYTES_MAX * 1.1))));
  if (!(answer instanceof Response)) throw new Error('the body was let through');
  expect(answer.status).toBe(413);
  expect(await answer.json()).toMatchObject({
    refusal: { code: 'tooLarge', message: expect.stringContaining('larger than 1024 KB') },
  });
});

test('capped() hands on a smaller request as it was', async () => {
  const answer = await capped(request('{"a":1}', { 'content-type': 'application/json' }));
  if (answer instanceof Response) throw new Error('the body was refused');
  expect(answer.headers.get('content-type')).toBe('application/json');
  expect(await answer.text()).toBe('{"a":1}');
});
