import { randomUUID } from 'node:crypto';
import { addSaid, connect, type Db, schema, withGarage } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import type { SaidLine } from '@quartermark/engine/said';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let job: Db;
beforeAll(async () => {
  at = await home('api said');
  job = connect(at.database.jobUrl, { max: 2 });
});
afterAll(async () => {
  await job.close();
  await at.close();
});

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const list = (cursor: string | null = null) => at.me.said.list({ garageId: at.garageId, cursor });
const LIMITS = [{ measure: 'sessions' as const, value: 8 }];
/** The limits as they are kept: canonical, whatever order they were typed in. */
const LIMITS_TEXT = '{"limits":[{"measure":"sessions","value":8}],"severe":null}';

/** A car with pads last done on 1 January 2026 and a circuit day of four sessions in each month since. */
async function addCar(name: string): Promise<{ carId: string; itemId: string }> {
  const [carId, itemId] = [randomUUID(), randomUUID()];
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km' } });
  const baseline = { on: '2026-01-01', historyComplete: true };
  const item = { name: 'Pads', limits: LIMITS, baseline };
  await at.me.item.add({ ...command(), carId, itemId, item });
  for (const on of ['2026-01-20', '2026-03-20'])
    await at.record(
      at.draft('session', { on, car: carId, use: 'circuit', sessions: 4, venue: 'Home' } as never),
    );
  return { carId, itemId };
}

const line = (carId: string, item: string, more: Partial<SaidLine>): SaidLine => ({
  car: carId,
  item,
  saidOn: '2026-01-26',
  since: '2026-01-01',
  early: '2026-03-01',
  likely: '2026-04-01',
  late: '2026-05-01',
  binding: 'sessions',
  limits: LIMITS_TEXT,
  engineVersion: 3,
  afterwards: false,
  ...more,
});
const say = (carId: string, lines: SaidLine[]) =>
  withGarage(job, { kind: 'job' }, at.garageId, (tx) => addSaid(tx, at.garageId, carId, lines));

test('said.list holds what is stored against the log as it stands now', async () => {
  const { carId, itemId } = await addCar('Stored');
  await say(carId, [
    line(carId, itemId, {}),
    line(carId, itemId, { saidOn: '2026-03-16', early: '2026-03-25', likely: '2026-04-10' }),
  ]);
  const page = await list();
  const car = page.cars.find((one) => one.carId === carId);
  expect(car).toMatchObject({ name: 'Stored', items: { [itemId]: 'Pads' } });
  const stored = car?.lines?.filter(({ said }) => !said.afterwards);
  expect(stored?.map(({ said, outcome, reachedOn }) => [said.saidOn, outcome, reachedOn])).toEqual([
    ['2026-01-26', 'inside', '2026-03-20'],
    ['2026-03-16', 'earlier', '2026-03-20'],
  ]);
  // and the log of today decides: without its last session the limit is not reached
  const history = await at.me.entry.history({ garageId: at.garageId, carId });
  const last = history.entries.find(({ entry }) => entry.on === '2026-03-20');
  if (!last) throw new Error('the session is not in the log');
  await at.me.entry.remove({ ...command(), entryId: last.entry.id, baseRevision: 1 });
  const after = (await list()).cars.find((one) => one.carId === carId);
  expect(after?.lines?.filter(({ said }) => !said.afterwards)).toMatchObject([
    { outcome: 'later', reachedOn: null, atLeast: true },
    { outcome: 'later' },
  ]);
});

test('said.list works out afterwards what lies before the first that is stored, and nothing later', async () => {
  const { carId, itemId } = await addCar('Half');
  const linesOf = async () => (await list()).cars.find((one) => one.carId === carId)?.lines ?? [];
  const shown = async () =>
    (await linesOf())
      .toSorted((a, b) => (a.said.saidOn < b.said.saidOn ? -1 : 1))
      .map(({ said }) => [said.saidOn, said.afterwards]);
  expect(await shown()).toEqual([['2026-02-01', true]]);
  await say(carId, [line(carId, itemId, { saidOn: '2026-02-28', likely: '2026-03-20' })]);
  expect(await shown()).toEqual([
    ['2026-02-01', true],
    ['2026-02-28', false],
  ]);
  await say(carId, [line(carId, itemId, { saidOn: '2026-02-01', likely: '2026-03-10' })]);
  expect(await shown()).toEqual([
    ['2026-02-01', false],
    ['2026-02-28', false],
  ]);
});

test('said.list stores nothing by being read', async () => {
  await addCar('Read');
  const rows = () =>
    withGarage(job, { kind: 'job' }, at.garageId, (tx) => tx.select().from(schema.said));
  const before = await rows();
  const page = await list();
  expect(page.cars.some(({ lines }) => lines?.some(({ said }) => said.afterwards))).toBe(true);
  expect(await rows()).toEqual(before);
});

test('said.list gives four cars a page, by name, each once', async () => {
  for (const name of ['Zeta', 'Alpha', 'Alpha', 'Mid']) await addCar(name);
  const names: string[] = [];
  const ids = new Set<string>();
  const sizes: number[] = [];
  let cursor: string | null = null;
  do {
    const page: Awaited<ReturnType<typeof list>> = await list(cursor);
    names.push(...page.cars.map(({ name }) => name));
    for (const { carId } of page.cars) ids.add(carId);
    sizes.push(page.cars.length);
    cursor = page.next;
    expect(page.total).toBe(8);
  } while (cursor !== null && sizes.length < 9);
  expect(sizes).toEqual([4, 4]);
  expect(ids.size).toBe(8);
  expect(names).toEqual(['Alpha', 'Alpha', 'Brindle 2', 'Half', 'Mid', 'Read', 'Stored', 'Zeta']);
  expect(await refused(list('bm93aGVyZQ'))).toMatchObject({ code: 'badInput', field: 'cursor' });
});

test('said.list gives one car alone where it is asked for, and none for a car that is not here', async () => {
  const { carId } = await addCar('Alone');
  const { garageId } = at;
  const one = await at.me.said.list({ garageId, carId });
  expect(one).toMatchObject({ cars: [{ carId, name: 'Alone' }], next: null, total: 1 });
  const none = await at.me.said.list({ garageId, carId: randomUUID() });
  expect(none).toMatchObject({ cars: [], next: null, total: 0 });
});

test('said.list shows a car whose log cannot be read without lines, and the others with theirs', async () => {
  const { carId } = await addCar('Alpha broken');
  const owner = connect(at.database.ownerUrl, { max: 1 });
  const note = at.draft('note', { car: carId, on: addDays(at.today, -1), note: 'x' });
  await at.record(note);
  // as an older version might have left it
  await owner.orm.execute(
    `alter table entry no force row level security;
     update entry set body = body - 'note' where id = '${note.id}'`,
  );
  await owner.close();
  const page = await list();
  expect(page.cars.find((one) => one.carId === carId)).toMatchObject({ lines: null, items: {} });
  expect(page.cars.filter(({ lines }) => lines !== null)).toHaveLength(3);
  expect(at.logged.some(({ message }) => message === 'a log cannot be read')).toBe(true);
});
