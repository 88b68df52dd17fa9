import { addDays } from '@quartermark/engine/calendar';
import postgres from 'postgres';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';
import { temporaryCluster } from '../support/cluster.ts';
import { buildTestWorker } from '../support/worker-process.ts';
import { BOOKS, copyDatabase, makeGarages, standing, startOn, until } from './many-garages.ts';
import { table, times } from './table.ts';

const YESTERDAY = 'bench_yesterday';

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
    // every car stands in yesterday, and midnight has passed
    await makeGarages(cluster, {
      name: YESTERDAY,
      today,
      cars,
      tables: [...BOOKS, 'snapshot', 'car_work', 'garage_day'],
      after: async (tx) => {
        await tx`update snapshot set as_of = ${addDays(today, -1)}`;
        await tx`update garage_day set next_day_at = now() - interval '1 hour'`;
      },
    });
    const nights: Night[] = [];
    for (const workers of [1, 2]) nights.push(await sleepThrough(cluster, workers, today));
    show(nights);
  } finally {
    await cluster.stop();
  }
}

async function sleepThrough(cluster: Cluster, count: number, today: string): Promise<Night> {
  const urls = await copyDatabase(cluster, YESTERDAY, `bench_night_${count}`);
  const sql = postgres(urls.ownerUrl, { max: 1, onnotice: () => {} });
  const began = performance.now();
  const workers = Array.from({ length: count }, () => startOn(urls, today));
  try {
    await until(
      Number.POSITIVE_INFINITY,
      '',
      async () => (await standing(sql, today)).behind === 0,
    );
    const tookMs = performance.now() - began;
    return { workers: count, cars: (await standing(sql, today)).cars, tookMs };
  } finally {
    await sql.end();
    await Promise.all(workers.map((worker) => worker.kill('SIGTERM')));
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
