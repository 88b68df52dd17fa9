import { randomUUID } from 'node:crypto';
import { refusalOf } from '@quartermark/api/server';
import type { EntryDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cookieOf, type Home, home, OWNER, PASSWORD } from '../support/api-house.ts';

const CLIENTS = 8;
const STEPS = 15;

let at: Home;
beforeAll(async () => {
  at = await home('api concurrent');
});
afterAll(() => at.close());

type Mine = { entry: EntryDraft & { kind: 'note' }; revision: number; removed: boolean };

/** One client: records, amends and removes its own entries by turns, and sends each command twice. */
async function client(number: number): Promise<{ mine: Mine[]; accepted: number }> {
  const signedIn = await at.post('/sign-in/email', { email: OWNER.email, password: PASSWORD });
  const me = at.caller(cookieOf(signedIn));
  const mine: Mine[] = [];
  let accepted = 0;
  const twice = async (send: (commandId: string) => Promise<{ revision: number }>) => {
    const commandId = randomUUID();
    const [first, again] = await Promise.all([send(commandId), send(commandId)]);
    expect(again).toEqual(first);
    accepted += 1;
    return first.revision;
  };
  const { garageId } = at;
  for (let step = 0; step < STEPS; step += 1) {
    const last = mine.at(-1);
    if (step % 3 === 0 || !last) {
      const entry = at.draft('note', { note: `client ${number} step ${step}` }) as Mine['entry'];
      const revision = await twice((commandId) => me.entry.record({ garageId, commandId, entry }));
      mine.push({ entry, revision, removed: false });
    } else if (step % 3 === 1) {
      const entry = { ...last.entry, note: `${last.entry.note}, amended` };
      const { revision: baseRevision } = last;
      const entryId = entry.id;
      last.revision = await twice((commandId) =>
        me.entry.amend({ garageId, commandId, entryId, baseRevision, entry }),
      );
      last.entry = entry;
    } else {
      const { revision: baseRevision } = last;
      const entryId = last.entry.id;
      last.revision = await twice((commandId) =>
        me.entry.remove({ garageId, commandId, entryId, baseRevision }),
      );
      last.removed = true;
    }
  }
  return { mine, accepted };
}

test('eight clients on one car: each accepted command is there exactly once', async () => {
  const where = { garageId: at.garageId, carId: at.carId };
  const before = (await at.me.car.view(where)).wantedVersion;
  const clients = await Promise.all(Array.from({ length: CLIENTS }, (_, number) => client(number)));
  const accepted = clients.reduce((sum, one) => sum + one.accepted, 0);
  expect(accepted).toBe(CLIENTS * STEPS);
  expect((await at.me.car.view(where)).wantedVersion).toBe(before + accepted);

  const stored = new Map<string, { note: unknown; revision: number; removed: boolean }>();
  const ordinals: number[] = [];
  let cursor: string | null = null;
  do {
    const page: Awaited<ReturnType<typeof at.me.entry.history>> = await at.me.entry.history({
      ...where,
      removed: true,
      cursor,
    });
    for (const { entry, revision, removed, recorded } of page.entries) {
      expect(stored.has(entry.id)).toBe(false);
      stored.set(entry.id, { note: entry.note, revision, removed });
      ordinals.push(recorded);
    }
    cursor = page.next;
  } while (cursor);
  const expected = clients.flatMap((one) => one.mine);
  expect(stored.size).toBe(expected.length);
  for (const { entry, revision, removed } of expected)
    expect(stored.get(entry.id)).toEqual({ note: entry.note, revision, removed });
  // no ordinal twice and none missing
  expect(ordinals.sort((a, b) => a - b)).toEqual(expected.map((_, index) => index + 1));
});

test('eight amendments from one revision: one is accepted, seven are conflicts', async () => {
  const entry = at.draft('note', { note: 'Contested.' });
  await at.record(entry);
  const answers = await Promise.allSettled(
    Array.from({ length: CLIENTS }, (_, number) =>
      at.me.entry.amend({
        garageId: at.garageId,
        commandId: randomUUID(),
        entryId: entry.id,
        baseRevision: 1,
        entry: { ...entry, note: `By ${number}.` },
      }),
    ),
  );
  expect(answers.filter((answer) => answer.status === 'fulfilled')).toHaveLength(1);
  const refusals = answers.flatMap((answer) =>
    answer.status === 'rejected' ? [refusalOf(answer.reason)?.code] : [],
  );
  expect(refusals).toEqual(Array.from({ length: CLIENTS - 1 }, () => 'conflict'));
});
