import { randomUUID } from 'node:crypto';
import { expect } from '@playwright/test';
import { test } from '../../support/browser/garage-test.ts';

// What a form does not let through, sent past it: the server answers in words and writes nothing.

const REFUSED = [
  {
    what: 'a level no stick can show',
    entry: { kind: 'oilCheck', level: { how: 'fraction', fraction: 7.5 } },
    field: 'entry.level.fraction',
    message: /7\.5.*above 1\.6|above 1\.6.*7\.5/s,
  },
  {
    what: 'a unit nobody knows',
    entry: { kind: 'odometer', odometer: { text: '41200', unit: 'furlong' } },
    field: 'entry.odometer',
    message: /furlong.*km, mi|km, mi.*furlong/s,
  },
  {
    what: 'a volume below zero',
    entry: { kind: 'oilTopUp', volume: { text: '-0.5', unit: 'l' } },
    field: 'entry.volume.text',
    message: /-0\.5 is outside 0 to/,
  },
  {
    what: 'a date after tomorrow',
    entry: { kind: 'note', note: 'Too early.', on: '2026-06-17' },
    field: 'entry.on',
    message: /2026-06-17.*today is 2026-06-15/,
  },
  {
    what: 'a note of 65 KB',
    entry: { kind: 'note', note: 'x'.repeat(65 * 1024) },
    field: 'entry.note',
    message: /longer than 64 KB.*split/,
  },
];

for (const { what, entry, field, message } of REFUSED)
  test(`the api refuses ${what}, names field, value and mend, and writes nothing`, async ({
    garage,
  }) => {
    const { status, refusal } = await garage.attempt(entry);
    expect([400, 422]).toContain(status);
    expect(refusal?.field).toContain(field);
    expect(refusal?.message).toMatch(message);
    expect(await garage.log()).toEqual([]);
  });

test('the api refuses a command sent again with another payload, and keeps the first', async ({
  garage,
}) => {
  const commandId = randomUUID();
  const first = garage.entry({ kind: 'note', note: 'The first.' });
  const other = garage.entry({ kind: 'note', note: 'Another.' });
  await garage.api.mutate('entry.record', { garageId: garage.garageId, commandId, entry: first });
  const again = { garageId: garage.garageId, commandId, entry: other };
  const { refusal } = await garage.api.attempt('entry.record', again);
  expect(refusal).toMatchObject({
    code: 'commandReused',
    message: expect.stringContaining('reload the page'),
  });
  expect((await garage.log()).map((one) => one.entry.id)).toEqual([first.id]);
});

test('the api refuses a change that rests on an old revision and shows the newest', async ({
  garage,
}) => {
  const { id } = await garage.write({ kind: 'note', note: 'As first written.' });
  const amend = (note: string, baseRevision: number) =>
    garage.api.attempt(
      'entry.amend',
      garage.command({
        entryId: id,
        baseRevision,
        entry: garage.entry({ id, kind: 'note', note }),
      }),
    );
  expect((await amend('By the one.', 1)).status).toBe(200);
  const { refusal } = await amend('By the other.', 1);
  expect(refusal).toMatchObject({
    code: 'conflict',
    conflict: { revision: 2, body: { note: 'By the one.' } },
  });
});

test('the api refuses a body of 1.1 MB before it reads it, and writes nothing', async ({
  garage,
  page,
  baseURL,
}) => {
  const answer = await page.request.post('/api/trpc/entry.record', {
    headers: { 'content-type': 'application/json', origin: baseURL ?? '' },
    data: JSON.stringify({ json: { padding: 'x'.repeat(1.1 * 1024 * 1024) } }),
  });
  expect(answer.status()).toBe(413);
  expect(await answer.text()).toMatch(/larger than 1024 KB.*smaller parts/);
  expect(await garage.log()).toEqual([]);
});
