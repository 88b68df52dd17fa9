import { addDays } from '@quartermark/engine/calendar';
import postgres from 'postgres';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';
import { temporaryCluster } from '../support/cluster.ts';
import { buildTestWorker, WorkerProcess, workerEnv } from '../support/worker-process.ts';
import { makeDatabase, type Urls } from './database.ts';
import { demoHouse } from './demo-house.ts';
import { table, times } from './table.ts';

/** Tables of a garage that its cars' books are loaded from, in the order of their keys. */
const COPIED = [
  'gear',
  'car',
  'entry',
  'item',
  'lay_up',
  'event',
  'planned_lay_up',
  'part_order',
] as const;
const LOOK_EVERY_MS = 250;
const FIRST_COMPUTED_MS = 60_000;

type Night = { workers: number; cars: number; tookMs: number };

/**
 * Midnight in many garages at once: how long one worker takes until every car stands in its new day, and how
 * long two. The garages are copies of the demo's, made in SQL; both nights begin from the same database.
 *
 * @param cars at least so many; whole garages are copied
 */
export async function midnight(cars: number): Promise<void> {
  if (!Number.isInteger(cars) || cars < 1)
    throw new RangeError(`could not make ${cars} cars: give a whole number of 1 and more`);
  buildTestWorker();
  const cluster = await temporaryCluster({ fsync: 'on', full_page_writes: 'on' });
  try {
    const today = new Date().toISOString().slice(0, 10);
    await makeYesterday(cluster, cars, today);
    const nights: Night[] = [];
    for (const workers of [1, 2]) nights.push(await sleepThrough(cluster, workers, today));
    show(nights);
  } finally {
    await cluster.stop();
  }
}

/** A database in which every car stands in yesterday, and midnight has passed. */
async function makeYesterday(cluster: Cluster, cars: number, today: string): Promise<void> {
  const urls = await makeDatabase(cluster, 'bench_yesterday');
  const house = await demoHouse(urls);
  const worker = new WorkerProcess(
    workerEnv({ ...urls, drop: async () => {} }, null, clock(today)),
  );
  await worker.says('worker ready');
  const sql = postgres(urls.ownerUrl, { max: 1, onnotice: () => {} });
  try {
    await waitFor(sql, (row) => row.behind === 0 && row.cars > 0, today, FIRST_COMPUTED_MS);
    await worker.kill('SIGTERM');
    await house.close();
    const [own] = await sql<{ cars: number }[]>`select count(*)::int as cars from car`;
    const copies = Math.max(0, Math.ceil(cars / (own?.cars ?? 1)) - 1);
    console.log(`Copying the demo garage ${copies} times …`);
    await sql.begin(async (tx) => {
      await tx`create temporary table copies on commit drop as
        select gen_random_uuid() as id from generate_series(1, ${copies}::int)`;
      await tx`insert into organization (id, name, slug, created_at)
        select id, 'Long barn', id::text, now() from copies`;
      await tx`insert into garage
        select (jsonb_populate_record(g, jsonb_build_object('id', c.id))).*
        from copies c, garage g where g.id = ${house.garageId}`;
      for (const name of [...COPIED, 'snapshot', 'car_work', 'garage_day'])
        await tx`insert into ${tx(name)}
          select (jsonb_populate_record(t, jsonb_build_object('garage_id', c.id))).*
          from copies c, ${tx(name)} t where t.garage_id = ${house.garageId}`;
      await tx`update snapshot set as_of = ${addDays(today, -1)}`;
      await tx`update garage_day set next_day_at = now() - interval '1 hour'`;
    });
    await sql`analyze`;
  } finally {
    await sql.end();
  }
  await emptyTheQueue(urls);
}

/** A scheduler that is left behind would make the next worker wait for its next tick. */
async function emptyTheQueue({ ownerUrl }: Urls): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => {} });
  const tables = await sql<{ name: string }[]>`
    select tablename as name from pg_tables where schemaname = 'bullmq' and tablename not like '%migration%'`;
  for (const { name } of tables) await sql`truncate ${sql(`bullmq.${name}`)} cascade`;
  await sql.end();
}

async function sleepThrough(cluster: Cluster, count: number, today: string): Promise<Night> {
  const name = `bench_night_${count}`;
  const admin = postgres(cluster.url('postgres'), { max: 1, onnotice: () => {} });
  await admin`create database ${admin(name)} template bench_yesterday`;
  await admin.end();
  const jobUrl = cluster.url(name, { name: 'job', password: 'job-only-for-the-bench' });
  const urls = { ownerUrl: cluster.url(name), appUrl: jobUrl, jobUrl };
  const sql = postgres(urls.ownerUrl, { max: 1, onnotice: () => {} });
  const began = performance.now();
  const workers = Array.from(
    { length: count },
    () => new WorkerProcess(workerEnv({ ...urls, drop: async () => {} }, null, clock(today))),
  );
  try {
    const { cars } = await waitFor(sql, (row) => row.behind === 0, today, Number.POSITIVE_INFINITY);
    return { workers: count, cars, tookMs: performance.now() - began };
  } finally {
    await sql.end();
    await Promise.all(workers.map((worker) => worker.kill('SIGTERM')));
  }
}

const clock = (today: string) => ({ QUARTERMARK_TODAY: today });

type Standing = { cars: number; behind: number };

async function waitFor(
  sql: postgres.Sql,
  done: (standing: Standing) => boolean,
  today: string,
  withinMs: number,
): Promise<Standing> {
  const began = performance.now();
  for (;;) {
    const [standing] = await sql<Standing[]>`
      select count(*)::int as cars, (count(*) filter (where s.as_of is null or s.as_of < ${today}))::int as behind
      from car c left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id`;
    if (standing && done(standing)) return standing;
    if (performance.now() - began > withinMs)
      throw new Error(`the cars did not get into ${today} within ${withinMs / 1000} s`);
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}

function show(nights: readonly Night[]): void {
  const one = nights[0]?.tookMs ?? 1;
  console.log(
    table([
      ['midnight', 'cars', 'took', 'a car', 'beside one worker'],
      ...nights.map(({ workers, cars, tookMs }) => [
        `${workers} worker${workers === 1 ? '' : 's'}`,
        cars.toLocaleString('en'),
        `${(tookMs / 1000).toFixed(1)} s`,
        `${(tookMs / cars).toFixed(1)} ms`,
        times(tookMs / one),
      ]),
    ]),
  );
}
