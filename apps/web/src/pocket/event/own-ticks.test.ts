import 'fake-indexeddb/auto';
import type { PocketSheet, TickView } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import type { TickMade } from '../queue/command.ts';
import { listCommands, putInLine, settle, takeOut } from '../queue/line.ts';
import { openPocket, type PocketDb } from '../queue/store.ts';
import { forgetShown, readSent } from '../sheet/sent-ticks.ts';
import { lineTicks, ownTicks } from './own-ticks.ts';

let made = 0;
const tick = (line: string, done = true, tickId = `t${made++}`): TickMade => ({
  tickId,
  eventId: 'e',
  carId: 'c',
  line,
  done,
  madeAt: `2026-06-20T10:00:00.${String(made).padStart(3, '0')}Z`,
});
const shown = (one: TickMade, by = 'Oda'): TickView => ({ ...one, by, at: one.madeAt });
const put = (db: PocketDb, one: TickMade) =>
  putInLine(db, {
    verb: 'event.tick',
    input: { tick: one, words: one.line },
    commandId: `c-${one.tickId}`,
    garageId: 'g',
    madeAt: '2026-06-20T10:00:00Z',
  });
const stands = async (db: PocketDb, ticks: readonly TickView[]) =>
  Object.fromEntries(lineTicks('e', ticks, ownTicks(await readSent(db), await listCommands(db))));

test('what was ticked on this phone shows at once, above what the server had', async () => {
  const db = await openPocket('own-1');
  const before = [shown(tick('torque')), shown(tick('oil'))];
  await put(db, tick('torque', false));
  await put(db, tick('pads'));
  expect(await stands(db, before)).toEqual({
    torque: { done: false, by: null, waits: true },
    oil: { done: true, by: 'Oda', waits: false },
    pads: { done: true, by: null, waits: true },
  });
});

test('a tick that has been sent stays ticked until a sheet shows it, then the sheet decides', async () => {
  const db = await openPocket('own-2');
  const mine = tick('torque');
  const { order } = await put(db, mine);
  await settle(db, order, { id: mine.tickId, revision: 1, version: 1 });
  expect(await stands(db, [])).toEqual({ torque: { done: true, by: null, waits: false } });

  const byMe = { torque: { done: true, by: 'Me', waits: false } };
  expect(await stands(db, [shown(mine, 'Me')])).toEqual(byMe);
  const theirs = tick('torque', false);
  const ticks = [shown(mine, 'Me'), shown(theirs)];
  expect(await stands(db, ticks)).toEqual({ torque: { done: false, by: 'Oda', waits: false } });
  const sheet = { garages: [{ days: [{ event: { eventId: 'e' }, ticks: [] }] }] };
  await forgetShown(db, sheet as unknown as PocketSheet);
  expect(await readSent(db)).toEqual([mine]);
  const newer = { garages: [{ days: [{ event: { eventId: 'e' }, ticks }] }] };
  await forgetShown(db, newer as unknown as PocketSheet);
  expect(await readSent(db)).toEqual([]);
});

test('what somebody ticked after this phone did decides, though this phone has not sent its own yet', async () => {
  const db = await openPocket('own-4');
  await put(db, tick('torque'));
  const after = [shown(tick('torque', false))];
  expect(await stands(db, after)).toEqual({ torque: { done: false, by: 'Oda', waits: false } });
});

test('a tick that was thrown away, and one of another event, tick nothing', async () => {
  const db = await openPocket('own-3');
  const { order } = await put(db, tick('torque'));
  await put(db, { ...tick('oil'), eventId: 'another' });
  await takeOut(db, order);
  expect(await stands(db, [])).toEqual({});
});
