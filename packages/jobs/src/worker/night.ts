import {
  carsBehindDay,
  type DueGarage,
  dayZone,
  garagesDue,
  setNextDay,
  withGarage,
} from '@quartermark/db';
import { nextMidnight, todayIn } from '@quartermark/engine/calendar';
import { causeOf } from './causes.ts';
import type { NightWork, Tries, Work } from './lanes.ts';
import { recompute } from './recompute.ts';
import type { Shop } from './shop.ts';

const GARAGES_PER_PAGE = 200;
const CARS_PER_CHUNK = 200;

/**
 * The tick: finds the garages whose day has begun and queues their cars. A garage's next day is set only
 * when none of its cars is of an earlier day any more, so a night whose jobs were lost is simply found
 * again by the next tick.
 */
export async function openNight(shop: Shop): Promise<void> {
  let after: string | null = null;
  for (;;) {
    const page: DueGarage[] = await garagesDue(shop.db, shop.clock.now(), {
      after,
      limit: GARAGES_PER_PAGE,
    });
    for (const garage of page) await openDay(shop, garage);
    if (page.length < GARAGES_PER_PAGE) return;
    after = page.at(-1)?.garageId ?? null;
  }
}

async function openDay(shop: Shop, garage: DueGarage): Promise<void> {
  try {
    const carIds = await carsOfYesterday(shop, garage);
    await shop.lanes.publishNight(chunksOf(garage.garageId, carIds, today(shop, garage)));
  } catch (error) {
    // one garage must not keep the others in yesterday; the next tick comes back to it
    shop.log.error({ ...garage, error: causeOf(error) }, 'a garage could not begin its day');
  }
}

/** Cars of one garage in chunks of at most 200, each known by what it is for and its first car. */
export function chunksOf(garageId: string, carIds: readonly string[], why: string): NightWork[] {
  const chunks: NightWork[] = [];
  for (let at = 0; at < carIds.length; at += CARS_PER_CHUNK)
    chunks.push({ garageId, why, carIds: carIds.slice(at, at + CARS_PER_CHUNK) });
  return chunks;
}

/** The ids still to be done today; with none left, the garage's day is closed. */
async function carsOfYesterday(shop: Shop, garage: DueGarage): Promise<string[]> {
  const { due, resting } = await withGarage(
    shop.db,
    { kind: 'job' },
    garage.garageId,
    (tx) => carsBehindDay(tx, garage.garageId, today(shop, garage)),
    { readOnly: true },
  );
  if (due.length + resting === 0)
    await setNextDay(shop.db, garage, new Date(nextMidnight(shop.clock.now(), garage.zone)));
  return due;
}

const today = (shop: Shop, { zone }: DueGarage) => todayIn(shop.clock.now(), zone);

/** Recomputes a chunk's cars one after another; those that are fresh by now cost one small read each. */
export async function runNightChunk(
  shop: Shop,
  { garageId, carIds }: NightWork,
  tries: Tries,
  failed: (car: Work, error: unknown) => Promise<void>,
): Promise<void> {
  const troubles: Array<{ car: Work; error: unknown }> = [];
  for (const carId of carIds) {
    const car = { garageId, carId };
    await recompute(shop, car).catch((error: unknown) => troubles.push({ car, error }));
  }
  const [first] = troubles;
  // cars that succeeded are skipped when the chunk is tried again
  if (first && tries.left > 0) throw first.error;
  for (const { car, error } of troubles) await failed(car, error);
  const zone = await dayZone(shop.db, garageId);
  if (zone !== null) await carsOfYesterday(shop, { garageId, zone });
}
