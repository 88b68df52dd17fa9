import postgres from 'postgres';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';
import { WorkerProcess, workerEnv } from '../support/worker-process.ts';
import { makeDatabase, type Urls } from './database.ts';
import { demoHouse } from './demo-house.ts';

/** Tables of a garage that its cars' books are loaded from, in the order of their keys. */
export const BOOKS = [
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

export type ManyGarages = {
  /** database that holds the demo garage, computed, and copies of it */
  name: string;
  today: string;
  /** at least so many; whole garages are copied */
  cars: number;
  /** tables that are copied besides the garage's own row, in the order of their keys */
  tables: readonly string[];
  /** in the transaction that makes the copies. @param demo the garage that was copied */
  after: (tx: postgres.TransactionSql, demo: string) => Promise<void>;
};

/** Makes a database of copies of the demo's garage, in SQL, with an empty queue. */
export async function makeGarages(cluster: Cluster, wanted: ManyGarages): Promise<Urls> {
  const { name, today, cars, tables, after } = wanted;
  const urls = await makeDatabase(cluster, name);
  const house = await demoHouse(urls);
  const worker = startOn(urls, today);
  await worker.says('worker ready');
  const sql = postgres(urls.ownerUrl, { max: 1, onnotice: () => {} });
  try {
    await until(FIRST_COMPUTED_MS, `the demo's cars were not computed for ${today}`, async () => {
      const { cars: own, behind } = await standing(sql, today);
      return own > 0 && behind === 0;
    });
    await worker.kill('SIGTERM');
    await house.close();
    const { cars: own } = await standing(sql, today);
    const copies = Math.max(0, Math.ceil(cars / own) - 1);
    console.log(`Copying the demo garage ${copies.toLocaleString('en')} times …`);
    await sql.begin(async (tx) => {
      await tx`create temporary table copies on commit drop as
        select gen_random_uuid() as to_garage from generate_series(1, ${copies}::int)`;
      await tx`insert into organization (id, name, slug, created_at)
        select to_garage, 'Long barn', to_garage::text, now() from copies`;
      await tx`insert into garage
        select (jsonb_populate_record(g, jsonb_build_object('id', c.to_garage))).*
        from copies c, garage g where g.id = ${house.garageId}`;
      for (const table of tables) await copyRows(tx, table, house.garageId);
      await after(tx, house.garageId);
    });
    await sql`analyze`;
  } finally {
    await sql.end();
  }
  await emptyTheQueue(urls);
  return urls;
}

/** Column by column: a row as a whole would be unpacked and packed again, which takes ten times as long. */
async function copyRows(tx: postgres.TransactionSql, table: string, from: string): Promise<void> {
  const found = await tx<{ name: string }[]>`
    select column_name as name from information_schema.columns
    where table_schema = 'public' and table_name = ${table} and column_name <> 'garage_id'
      and is_generated = 'NEVER'`;
  const names = found.map(({ name }) => name);
  const columns = tx.unsafe(names.map((name) => `"${name}"`).join(', '));
  await tx`insert into ${tx(table)} (garage_id, ${columns})
    select copies.to_garage, ${columns} from copies, ${tx(table)} t where t.garage_id = ${from}`;
}

/** A copy of a database nobody is connected to. */
export async function copyDatabase(cluster: Cluster, from: string, name: string): Promise<Urls> {
  const admin = postgres(cluster.url('postgres'), { max: 1, onnotice: () => {} });
  await admin`create database ${admin(name)} template ${admin(from)}`;
  await admin.end();
  const jobUrl = cluster.url(name, { name: 'job', password: 'job-only-for-the-bench' });
  return { ownerUrl: cluster.url(name), appUrl: jobUrl, jobUrl };
}

/** A worker of its own process, whose clock stands in this day. */
export function startOn(urls: Urls, today: string): WorkerProcess {
  const database = { ...urls, drop: async () => {} };
  return new WorkerProcess(workerEnv(database, null, { QUARTERMARK_TODAY: today }));
}

/** How many cars there are, and how many of them have no answer of this day. */
export async function standing(sql: postgres.Sql, today: string) {
  const [found] = await sql<{ cars: number; behind: number }[]>`
    select count(*)::int as cars, (count(*) filter (where s.as_of is null or s.as_of < ${today}))::int as behind
    from car c left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id`;
  if (!found) throw new Error('the cars could not be counted');
  return found;
}

/** Looks again and again. @param failed what to say where it never holds */
export async function until(withinMs: number, failed: string, holds: () => Promise<boolean>) {
  const began = performance.now();
  while (!(await holds())) {
    if (performance.now() - began > withinMs)
      throw new Error(`${failed} within ${withinMs / 1000} s`);
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}

/** A scheduler that is left behind would make the next worker wait for its next tick. */
async function emptyTheQueue({ ownerUrl }: Urls): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => {} });
  const tables = await sql<{ name: string }[]>`
    select tablename as name from pg_tables where schemaname = 'bullmq' and tablename not like '%migration%'`;
  for (const { name } of tables) await sql`truncate ${sql(`bullmq.${name}`)} cascade`;
  await sql.end();
}
