import { readFileSync } from 'node:fs';
import postgres from 'postgres';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';
import { temporaryCluster } from '../support/cluster.ts';
import { buildTestWorker, type WorkerProcess } from '../support/worker-process.ts';
import { copyDatabase, makeGarages, startOn, until } from './many-garages.ts';
import { table, times } from './table.ts';

/** What letters are made of. Without events of the next two weeks no log is opened, so none is copied. */
const TABLES = [
  'gear',
  'car',
  'item',
  'snapshot',
  'snapshot_detail',
  'due_line',
  'oil_line',
  'car_work',
  'garage_day',
];
const LOOK_EVERY_MS = 200;

type Night = {
  workers: number;
  /** composed in the time that it took */
  digests: number;
  letters: number;
  tookMs: number;
  /** the most that any of the workers held, MB */
  peakMb: number;
};
type Bare = { tookMs: number; garages: number };

/**
 * The night's letters of many garages whose cars stand in their new day: digests a second by one worker and by
 * two, beside the bare read of the same rows, and the most memory a worker held. The garages are copies of the
 * demo's, each with one member; mail waits for its hour, so that nothing is sent.
 *
 * @param sizes cars of each round, at least so many
 */
export async function digests(sizes: readonly number[]): Promise<void> {
  buildTestWorker();
  const cluster = await temporaryCluster({ fsync: 'on', full_page_writes: 'on' });
  try {
    for (const cars of sizes) {
      const rows = await round(cluster, cars);
      console.log(
        `\nLetters of a night of ${cars.toLocaleString('en')} cars, beside the bare read of their rows:\n`,
      );
      console.log(`${table([HEAD, ...rows])}\n`);
    }
  } finally {
    await cluster.stop();
  }
}

const HEAD = [
  'digests',
  'garages',
  'letters',
  'took',
  'digests a second',
  'beside the bare read',
  'peak memory',
];

async function round(cluster: Cluster, cars: number): Promise<string[][]> {
  if (!Number.isInteger(cars) || cars < 1)
    throw new RangeError(`could not make ${cars} cars: give a whole number of 1 and more`);
  const today = new Date().toISOString().slice(0, 10);
  const evening = `bench_evening_${cars}`;
  await makeGarages(cluster, {
    name: evening,
    today,
    cars,
    tables: TABLES,
    after: async (tx, demo) => {
      await tx`insert into member (organization_id, user_id, role, created_at)
        select c.to_garage, m.user_id, 'owner', now() from copies c, member m where m.organization_id = ${demo}`;
      await tx`update garage set demo = false`;
      await tx`insert into post_setting (garage_id, send_minute, mail, changed_at, changed_by)
        select g.id, 1439, ${tx.json({ host: 'mail.example', port: 587, encryption: 'required', user: null, from: 'garage@mail.example' })},
          now(), g.changed_by from garage g`;
      await tx`update garage_day set letter_date = null, compose_at = now() - interval '1 day',
        next_day_at = now() + interval '3 days'`;
      await tx`update event set removed_at = now() where garage_id = ${demo}`;
    },
  });
  const bare = await bareRead(cluster, evening);
  const nights: Night[] = [];
  for (const workers of [1, 2])
    nights.push(await write(cluster, { evening, workers, today, garages: bare.garages }));
  return nights.map((night) => rowOf(cars, night, bare));
}

/** Every row that letters are made of, read garage by garage down one connection, and thrown away. */
async function bareRead(cluster: Cluster, name: string): Promise<Bare> {
  const sql = postgres(cluster.url(name), { max: 1, onnotice: () => {} });
  try {
    const garages = await sql<{ id: string }[]>`select id from garage order by id`;
    const began = performance.now();
    for (const { id } of garages)
      await Promise.all([
        sql`select c.id, c.name, c.unit, s.status, s.as_of, d.detail -> 'matters' as matters,
            d.detail -> 'oil' as oil
          from car c join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
          join snapshot_detail d on d.garage_id = c.garage_id and d.car_id = c.id
          where c.garage_id = ${id}`,
        sql`select * from due_line where garage_id = ${id}`,
      ]);
    return { tookMs: performance.now() - began, garages: garages.length };
  } finally {
    await sql.end();
  }
}

type Asked = { evening: string; workers: number; today: string; garages: number };

async function write(cluster: Cluster, { evening, workers, today, garages }: Asked) {
  const name = `${evening}_${workers}`;
  const urls = await copyDatabase(cluster, evening, name);
  const sql = postgres(urls.ownerUrl, { max: 1, onnotice: () => {} });
  const processes = Array.from({ length: workers }, () => startOn(urls, today));
  try {
    const count = async () => {
      const [found] = await sql<{ digests: number; letters: number }[]>`
        select (select count(*)::int from digest) as digests, (select count(*)::int from letter) as letters`;
      return found ?? { digests: 0, letters: 0 };
    };
    // the start of the workers is nobody's night: what is composed before the first look is not counted
    await until(120_000, 'no letter was composed', async () => (await count()).digests > 0);
    const { digests: early } = await count();
    const began = performance.now();
    let peakMb = 0;
    for (;;) {
      peakMb = Math.max(peakMb, ...processes.map(peakOf));
      const { digests, letters } = await count();
      if (digests >= garages)
        return {
          workers,
          digests: digests - early,
          letters,
          tookMs: performance.now() - began,
          peakMb,
        };
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
  } finally {
    await Promise.all(processes.map((one) => one.kill('SIGTERM')));
    await sql.end();
  }
}

/** The most memory a process ever held, MB. */
function peakOf({ pid }: WorkerProcess): number {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  return Number(/VmHWM:\s+(\d+) kB/.exec(status)?.[1] ?? Number.NaN) / 1024;
}

function rowOf(cars: number, night: Night, bare: Bare): string[] {
  const { workers, digests, letters, tookMs, peakMb } = night;
  const perSecond = digests / (tookMs / 1000);
  return [
    `${cars.toLocaleString('en')} cars, ${workers} worker${workers === 1 ? '' : 's'}`,
    bare.garages.toLocaleString('en'),
    letters.toLocaleString('en'),
    `${(tookMs / 1000).toFixed(1)} s`,
    perSecond.toFixed(0),
    times(bare.garages / (bare.tookMs / 1000) / perSecond),
    `${peakMb.toFixed(0)} MB`,
  ];
}
