import { randomUUID } from 'node:crypto';
import { connect, insertCar, withGarage } from '@quartermark/db';
import { carInput } from '@quartermark/engine/log';
import postgres from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home, OWNER, refused } from '../support/api-house.ts';

let at: Home;
let sql: postgres.Sql;
beforeAll(async () => {
  at = await home('api garage');
  sql = postgres(at.database.ownerUrl, { max: 1 });
});
afterAll(async () => {
  await sql.end();
  await at.close();
});

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const wanted = async (carId: string) =>
  (await at.me.car.view({ garageId: at.garageId, carId })).wantedVersion;
const { name, zone, hemisphere, distanceUnit, volumeUnit } = {
  ...OWNER,
  name: OWNER.garageName,
};
const settings = { name, zone, hemisphere, distanceUnit, volumeUnit } as const;

describe('garage.change', () => {
  test('renames without recomputing, and another zone wants every car anew and moves its midnight', async () => {
    const carId = randomUUID();
    await at.me.car.add({ ...command(), carId, car: { name: 'Second', unit: 'mi' } });
    const before = [await wanted(at.carId), await wanted(carId)];
    await at.me.garage.change({ ...command(), baseRevision: 1, ...settings, name: 'Old dairy' });
    expect([await wanted(at.carId), await wanted(carId)]).toEqual(before);
    await at.me.garage.change({
      ...command(),
      baseRevision: 2,
      ...settings,
      name: 'Old dairy',
      zone: 'Pacific/Auckland',
    });
    expect([await wanted(at.carId), await wanted(carId)]).toEqual(
      before.map((version) => version + 1),
    );
    const [garage] = await at.me.garage.mine();
    // 10:00 UTC is 22:00 in Auckland: the same day, ending two hours later
    expect(garage).toMatchObject({
      name: 'Old dairy',
      zone: 'Pacific/Auckland',
      today: '2026-06-15',
      revision: 3,
    });
    const [day] =
      await sql`select zone, next_day_at from garage_day where garage_id = ${at.garageId}`;
    expect(day).toEqual({
      zone: 'Pacific/Auckland',
      next_day_at: new Date('2026-06-15T12:00:00Z'),
    });
  });

  test('refuses a stale revision and shows what the settings are now', async () => {
    const refusal = await refused(
      at.me.garage.change({ ...command(), baseRevision: 1, ...settings }),
    );
    expect(refusal).toMatchObject({
      code: 'conflict',
      conflict: {
        revision: 3,
        body: { name: 'Old dairy', zone: 'Pacific/Auckland' },
        by: 'Ada Fern',
      },
    });
  });
});

describe('cars and items', () => {
  test('car.change raises the version, and a stale one is a conflict with the newest car', async () => {
    const carId = randomUUID();
    const first = await at.me.car.add({ ...command(), carId, car: { name: 'A', unit: 'km' } });
    const car = { name: 'B', unit: 'km' as const, odoDigits: 6, profile: { sump: 'dry' as const } };
    const second = await at.me.car.change({ ...command(), carId, baseRevision: 1, car });
    expect(second).toEqual({ id: carId, revision: 2, version: first.version + 1 });
    const stale = at.me.car.change({
      ...command(),
      carId,
      baseRevision: 1,
      car: { name: 'C', unit: 'km' },
    });
    expect(await refused(stale)).toMatchObject({
      code: 'conflict',
      conflict: { revision: 2, body: car },
    });
    expect((await at.me.car.view({ garageId: at.garageId, carId })).car).toEqual(car);
  });

  test('item.change and item.remove go by the revision, and a removed item stays removed', async () => {
    const itemId = randomUUID();
    const item = {
      name: 'Plugs',
      limits: [{ measure: 'km' as const, value: 40000, unit: 'km' as const }],
    };
    await at.me.item.add({ ...command(), carId: at.carId, itemId, item });
    expect(
      (await refused(at.me.item.add({ ...command(), carId: at.carId, itemId, item }))).code,
    ).toBe('idInUse');
    const changed = { ...item, name: 'Spark plugs' };
    await at.me.item.change({ ...command(), itemId, baseRevision: 1, item: changed });
    const stale = await refused(at.me.item.change({ ...command(), itemId, baseRevision: 1, item }));
    expect(stale).toMatchObject({
      code: 'conflict',
      conflict: { revision: 2, body: { name: 'Spark plugs' } },
    });
    await at.me.item.remove({ ...command(), itemId, baseRevision: 2 });
    const late = await refused(at.me.item.change({ ...command(), itemId, baseRevision: 3, item }));
    expect(late.code).toBe('removed');
    const { items } = await at.me.car.view({ garageId: at.garageId, carId: at.carId });
    expect(items.map((one) => one.id)).not.toContain(itemId);
  });

  test('item.add refuses a "last done on" that has not come', async () => {
    const item = {
      name: 'Belts',
      limits: [{ measure: 'months' as const, value: 60 }],
      baseline: { on: '2027-01-01' },
    };
    const refusal = await refused(
      at.me.item.add({ ...command(), carId: at.carId, itemId: randomUUID(), item }),
    );
    expect(refusal).toMatchObject({ code: 'afterTomorrow', field: 'item.baseline.on' });
    expect(refusal.message).toContain('2027-01-01');
  });

  test('item.add refuses an item without limits', async () => {
    const item = { name: 'Belts', limits: [] };
    const refusal = await refused(
      at.me.item.add({ ...command(), carId: at.carId, itemId: randomUUID(), item }),
    );
    expect(refusal).toMatchObject({ code: 'badInput', field: 'item.limits' });
  });

  test('work.retry asks for a car anew and leaves work for the relay', async () => {
    const before = await wanted(at.carId);
    const written = await at.me.work.retry({ ...command(), carId: at.carId });
    expect(written.version).toBe(before + 1);
    const rows = await sql`
      select input_version::int as version from outbox
      where car_id = ${at.carId} order by id desc limit 1`;
    expect(rows).toEqual([{ version: before + 1 }]);
  });
});

describe('garage.overview', () => {
  test('pages every car exactly once, those never computed included', async () => {
    const db = connect(at.database.appUrl, { max: 1 });
    const [me] = await sql`select id from "user" limit 1`;
    try {
      await withGarage(db, { kind: 'user', userId: me?.id }, at.garageId, async (tx) => {
        for (let index = 0; index < 110; index += 1)
          await insertCar(tx, {
            garageId: at.garageId,
            id: randomUUID(),
            car: carInput.parse({ name: `Car ${index}`, unit: 'km' }),
            at: new Date(),
            by: me?.id,
          });
      });
    } finally {
      await db.close();
    }
    const seen: string[] = [];
    let cursor: string | null = null;
    let pages = 0;
    do {
      const page: Awaited<ReturnType<typeof at.me.garage.overview>> = await at.me.garage.overview({
        garageId: at.garageId,
        cursor,
      });
      seen.push(...page.rows.map((row) => row.carId));
      expect(page.cars).toBe(113);
      cursor = page.next;
      pages += 1;
    } while (cursor);
    expect(pages).toBe(3);
    expect(seen).toHaveLength(113);
    expect(new Set(seen).size).toBe(113);
  });
});
