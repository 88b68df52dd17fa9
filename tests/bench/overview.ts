import { randomUUID } from 'node:crypto';
import { connect, type Db, overviewPage, type Tx, withGarage } from '@quartermark/db';
import { sql } from 'drizzle-orm';
import type { Finding } from './finding.ts';
import type { Line } from './line.ts';
import { type Times, timed } from './statistics.ts';

const PAGE = 50;
const ROUNDS = 150;
const WARM_UP = 20;

type Big = { garageId: string; userId: string; cars: number };

/**
 * Pages of a garage with this many cars, the first and one from its middle, beside a bare select of the
 * same rows by their ids: no order, no paging, no failure beside it.
 */
export async function overviewFindings(line: Line, sizes: readonly number[]): Promise<Finding[]> {
  const owner = connect(line.urls.ownerUrl, { max: 1 });
  const app = connect(line.urls.appUrl, { max: 1 });
  try {
    const garages: Big[] = [];
    for (const cars of sizes) garages.push(await copyGarage(owner, line.house.garageId, cars));
    await owner.orm.execute(sql`analyze`);
    const findings: Finding[] = [];
    for (const garage of garages) findings.push(...(await measure(app, garage)));
    return findings;
  } finally {
    await Promise.all([owner.close(), app.close()]);
  }
}

/** Copies the cars of a garage, their snapshots with them, over and over into a new one. */
async function copyGarage(owner: Db, from: string, cars: number): Promise<Big> {
  const [garageId, userId] = [randomUUID(), randomUUID()];
  await owner.orm.transaction(async (tx) => {
    await tx.execute(sql`
      insert into "user" (id, name, email, updated_at)
      values (${userId}, 'Wren Halloway', ${`${userId}@club.example`}, now())`);
    await tx.execute(sql`
      insert into organization (id, name, slug, created_at)
      values (${garageId}, 'Long barn', ${garageId}, now())`);
    await tx.execute(sql`
      insert into member (organization_id, user_id, role, created_at)
      values (${garageId}, ${userId}, 'owner', now())`);
    await tx.execute(sql`
      insert into garage (id, name, zone, distance_unit, volume_unit, changed_at, changed_by)
      select ${garageId}::uuid, 'Long barn', zone, distance_unit, volume_unit, now(), ${userId}::uuid
      from garage where id = ${from}`);
    await tx.execute(sql`
      create temporary table copied on commit drop as
      select c.id as old_id, gen_random_uuid() as id, n
      from generate_series(1, ${cars}::int) n
      join (select id, row_number() over (order by id) - 1 as place, count(*) over () as cars
            from car where garage_id = ${from}) c on c.place = n % c.cars`);
    await tx.execute(sql`
      insert into car (garage_id, id, name, unit, profile, input_version, added_at, changed_at, changed_by)
      select ${garageId}::uuid, copied.id, name || ' ' || n, unit, profile, input_version, now(), now(), changed_by
      from copied join car on car.garage_id = ${from} and car.id = copied.old_id`);
    await tx.execute(sql`
      insert into snapshot
      select (jsonb_populate_record(s, jsonb_build_object('garage_id', ${garageId}::uuid,
        'car_id', copied.id, 'urgency', s.urgency + copied.n % 1000))).*
      from copied join snapshot s on s.garage_id = ${from} and s.car_id = copied.old_id`);
  });
  return { garageId, userId, cars };
}

async function measure(app: Db, { garageId, userId, cars }: Big): Promise<Finding[]> {
  const took: Record<'first' | 'middle', { page: Times; bare: Times }> = {
    first: { page: [], bare: [] },
    middle: { page: [], bare: [] },
  };
  await withGarage(app, { kind: 'user', userId }, garageId, async (tx) => {
    const middle = await placeInTheMiddle(tx, garageId);
    for (const [name, after] of [
      ['first', null],
      ['middle', middle],
    ] as const) {
      const { rows } = await overviewPage(tx, { garageId, after, limit: PAGE });
      if (rows.length !== PAGE || rows.some((row) => row.lane === null))
        throw new Error(`the ${name} page of ${cars} cars is not ${PAGE} computed cars`);
      const ids = rows.map((row) => row.carId);
      for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
        const page = await timed(() => overviewPage(tx, { garageId, after, limit: PAGE }));
        const bare = await timed(() => bareSelect(tx, garageId, ids));
        if (round < WARM_UP) continue;
        took[name].page.push(page);
        took[name].bare.push(bare);
      }
    }
  });
  return (['first', 'middle'] as const).map((name) => ({
    what: `${name} overview page of ${cars.toLocaleString('en')} cars`,
    took: took[name].page,
    beside: { what: 'a bare select of the same rows', took: took[name].bare },
    goal: { ratio: 3 },
  }));
}

async function placeInTheMiddle(tx: Tx, garageId: string) {
  const [row] = await tx.execute<{ urgency: number; carId: string }>(sql`
    select urgency, car_id as "carId" from snapshot where garage_id = ${garageId}
    order by urgency, car_id
    offset (select count(*) / 2 from snapshot where garage_id = ${garageId}) limit 1`);
  if (!row) throw new Error(`garage ${garageId} has no snapshot`);
  return row;
}

const bareSelect = (tx: Tx, garageId: string, ids: readonly string[]) =>
  tx.execute(sql`
    select c.id, c.name, c.unit, c.input_version, s.*
    from car c join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
    where c.garage_id = ${garageId} and c.id in ${ids}`);
