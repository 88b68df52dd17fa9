import {
  addSaid,
  carStanding,
  dropAnswer,
  loadRoad,
  type RoadAsked,
  replaceDueLines,
  replaceIfLater,
  replaceOilLine,
  SNAPSHOT_SCHEMA,
  settleWork,
  shelfOf,
  withGarage,
} from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import type { Work } from './lanes.ts';
import type { Shop } from './shop.ts';

const JOB = { kind: 'job' } as const;

type Seen =
  | { is: 'gone'; inputVersion: number }
  /** the stored snapshot rests on just this: version, engine and day */
  | { is: 'current' }
  | { is: 'behind'; asOf: string; inputVersion: number; asked: RoadAsked };

/**
 * Brings one car's snapshot up to date: reads its present inputs in one repeatable-read transaction,
 * asks the engine, and writes only what is later than the stored snapshot. Doing it twice changes
 * nothing; doing it late never puts back an older answer.
 */
export async function recompute(shop: Shop, work: Work): Promise<Seen['is']> {
  const seen = await look(shop, work);
  await shop.reached('afterRead');
  if (seen.is === 'behind') await write(shop, work, seen);
  else await settle(shop, work, seen);
  return seen.is;
}

function look({ db, clock, engine }: Shop, { garageId, carId }: Work): Promise<Seen> {
  return withGarage(
    db,
    JOB,
    garageId,
    async (tx): Promise<Seen> => {
      const car = await carStanding(tx, garageId, carId);
      // a car that was never here counts as removed at whatever version was wanted
      if (car === null) return { is: 'gone', inputVersion: Number.MAX_SAFE_INTEGER };
      if (car.removed) return { is: 'gone', inputVersion: car.inputVersion };
      const asOf = todayIn(clock.now(), car.zone);
      const { stored } = car;
      const current =
        stored !== null &&
        stored.inputVersion === car.inputVersion &&
        stored.engineVersion >= engine.version &&
        stored.snapshotSchema >= SNAPSHOT_SCHEMA &&
        stored.asOf >= asOf;
      if (current) return { is: 'current' };
      const shelf = shelfOf(tx, { id: garageId, zone: car.zone }, asOf);
      const { inputVersion, ...asked } = await loadRoad(shelf, carId, car.volumeUnit);
      return { is: 'behind', asOf, inputVersion, asked };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}

async function write(
  { db, clock, engine, reached }: Shop,
  { garageId, carId }: Work,
  seen: Extract<Seen, { is: 'behind' }>,
): Promise<void> {
  const { analysis, road, lane, lines, said, oil, ...columns } = engine.answer(seen.asked);
  await reached('beforeWrite');
  await withGarage(db, JOB, garageId, async (tx) => {
    const written = await replaceIfLater(
      tx,
      {
        garageId,
        carId,
        inputVersion: seen.inputVersion,
        engineVersion: engine.version,
        snapshotSchema: SNAPSHOT_SCHEMA,
        asOf: seen.asOf,
        computedAt: clock.now(),
        lane,
        ...columns,
      },
      { analysis, road },
    );
    const apart = columns.status !== 'inUse';
    // the snapshot's guard is theirs; sent down one connection without waiting in between
    if (written)
      await Promise.all([
        replaceDueLines(tx, { garageId, carId, apart, lines }),
        addSaid(tx, garageId, carId, said),
        replaceOilLine(tx, { garageId, carId, line: oil }),
      ]);
    await settleWork(tx, { garageId, carId, written });
  });
}

async function settle(
  { db }: Shop,
  { garageId, carId }: Work,
  seen: Extract<Seen, { is: 'gone' | 'current' }>,
): Promise<void> {
  await withGarage(db, JOB, garageId, (tx) =>
    seen.is === 'gone'
      ? dropAnswer(tx, { garageId, carId, version: seen.inputVersion })
      : settleWork(tx, { garageId, carId, written: false }),
  );
}
