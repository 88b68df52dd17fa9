import type { AppRouter, CarView, GarageView, LastValues } from '@quartermark/api/client';
import { todayIn } from '@quartermark/engine/calendar';
import type { TRPCClient } from '@trpc/client';
import { type PocketDb, pocketDb } from '../queue/store.ts';
import { clockAhead } from './garage-clock.ts';

export type SheetCar = { view: CarView; last: LastValues };
export type SheetGarage = { garage: GarageView; cars: SheetCar[] };
export type PocketSheet = { at: string; garages: SheetGarage[] };

/** The sheet as this browser keeps it. */
export type KeptSheet = {
  sheet: PocketSheet;
  /** by how much the garage's clock is ahead of this phone's, in milliseconds */
  aheadMs: number;
};

const KEY = 'sheet';

/** @throws what IndexedDB threw */
export async function readSheet(db: PocketDb): Promise<KeptSheet | null> {
  // written by `keepSheet` alone
  return ((await db.get('kept', KEY)) as KeptSheet | undefined) ?? null;
}

export async function keepSheet(db: PocketDb, kept: KeptSheet): Promise<void> {
  await db.put('kept', kept, KEY);
}

/** At signing out: nothing of a garage stays behind for whoever signs in next; what waits is kept. */
export async function dropSheet(): Promise<void> {
  try {
    await (await pocketDb()).delete('kept', KEY);
  } catch {
    // nothing is kept where nothing can be
  }
}

/** Asks the server for everything that can be shown and started from without it. */
export async function fetchSheet(client: TRPCClient<AppRouter>): Promise<KeptSheet> {
  const askedMs = Date.now();
  const sheet = await assemble(client);
  return { sheet, aheadMs: clockAhead(sheet.at, askedMs, Date.now()) };
}

async function assemble(client: TRPCClient<AppRouter>): Promise<PocketSheet> {
  const mine = await client.garage.mine.query();
  const garages = await Promise.all(
    mine.map(async ({ id: garageId }) => {
      const { garage, rows } = await client.garage.overview.query({ garageId });
      const cars = await Promise.all(
        rows.map(async ({ carId }) => ({
          view: await client.car.view.query({ garageId, carId }),
          last: await client.car.lastValues.query({ garageId, carId }),
        })),
      );
      return { garage, cars };
    }),
  );
  const first = garages[0]?.garage;
  const now = new Date();
  const same = !first || todayIn(now, first.zone) === first.today;
  return { at: same ? now.toISOString() : `${first.today}T12:00:00.000Z`, garages };
}
