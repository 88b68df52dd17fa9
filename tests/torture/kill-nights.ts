import { connect } from '@quartermark/db';
import { makeDatabase } from '../bench/database.ts';
import { table } from '../bench/table.ts';
import { temporaryCluster } from '../support/cluster.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { KILL_POINTS, KilledNights, type KillPoint } from '../support/killed-night.ts';
import { buildTestWorker } from '../support/worker-process.ts';

type Count = { nights: number; once: number; twice: number };

/**
 * Kills a worker at a point drawn by chance in so many nights, lets the next one carry on, and prints what arrived.
 *
 * @throws Error at the first night whose letter did not arrive, came under two Message-IDs, or came twice without the
 *   row saying that it may have
 */
export async function killNights(rounds: number): Promise<void> {
  if (!Number.isInteger(rounds) || rounds < 1)
    throw new RangeError(`could not kill ${rounds} nights: give a whole number of 1 and more`);
  buildTestWorker();
  const cluster = await temporaryCluster();
  const urls = await makeDatabase(cluster, 'killed_nights');
  const app = connect(urls.appUrl, { max: 4 });
  const garage = await new JobsGarage(app).found();
  const nights = await KilledNights.open({ ...urls, drop: async () => {} }, null, garage);
  const counts = new Map<KillPoint, Count>();
  try {
    for (let round = 0; round < rounds; round += 1) {
      const point = KILL_POINTS[Math.floor(Math.random() * KILL_POINTS.length)] as KillPoint;
      const count = counts.get(point) ?? { nights: 0, once: 0, twice: 0 };
      const copies = await copiesOf(nights, point);
      counts.set(point, {
        nights: count.nights + 1,
        once: count.once + (copies === 1 ? 1 : 0),
        twice: count.twice + (copies === 2 ? 1 : 0),
      });
    }
  } finally {
    await nights.close();
    await app.close();
    await cluster.stop();
  }
  const rows = [...counts].map(([point, { nights: all, once, twice }]) =>
    [point, all, once, twice].map(String),
  );
  console.log(`\n${rounds} nights whose worker was killed:\n`);
  console.log(table([['killed at', 'nights', 'one letter', 'same Message-ID twice'], ...rows]));
}

async function copiesOf(nights: KilledNights, point: KillPoint): Promise<number> {
  const night = await nights.killAt(point);
  const { day, ids, messageId, answerLost } = night;
  const wrong =
    ids.length === 0 ||
    ids.some((id) => id !== messageId) ||
    ids.length > (point === 'accepted' && answerLost ? 2 : 1);
  if (wrong)
    throw new Error(`killed at ${point}, the night of ${day} had ${JSON.stringify(night)}`);
  return ids.length;
}
