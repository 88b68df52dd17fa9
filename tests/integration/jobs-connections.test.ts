import postgres from 'postgres';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { clockAt } from '../support/jobs-worker.ts';

const MORNING = '2026-03-10T10:00:00Z';
const ITEM = { name: 'Engine oil', limits: [{ measure: 'months' as const, value: 12 }] };
/** Its pool 10, the queues and their workers 12, one that listens: what DEVELOPERS.md counts of the server's 60. */
const WORKER_MOST = 23;

let bench: JobsBench;
let sql: postgres.Sql;
beforeAll(async () => {
  bench = await JobsBench.open('jobs_connections', 'PostgreSQL');
  sql = postgres(bench.database.ownerUrl, { max: 1, onnotice: () => {} });
});
afterAll(async () => {
  await sql?.end();
  await bench?.close();
});

/** Connections that the worker holds, whatever for. */
async function held(): Promise<number> {
  const [found] = await sql<{ held: number }[]>`
    select count(*)::int as held from pg_stat_activity
    where datname = current_database() and usename = 'job'`;
  return found?.held ?? 0;
}

test('a worker at work on entries, letters and post holds no more connections than are counted on', async () => {
  const garages = await Promise.all(
    Array.from({ length: 8 }, () => new JobsGarage(bench.app).found(new Date(MORNING))),
  );
  for (const garage of garages) for (let car = 0; car < 4; car += 1) await garage.addCar(ITEM);
  let most = 0;
  await bench.start({ clock: clockAt(MORNING), pace: { tickMs: 50 } });
  await eventually('every garage to have its letter', async () => {
    most = Math.max(most, await held());
    const [found] = await sql<{ done: number }[]>`select count(*)::int as done from digest`;
    return (found?.done ?? 0) >= garages.length;
  });
  // the queues' and the listener's own stay open, so that it was the worker that was counted
  expect(most).toBeGreaterThan(6);
  expect(most).toBeLessThanOrEqual(WORKER_MOST);
});
