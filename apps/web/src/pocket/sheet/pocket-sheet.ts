import type { AppRouter, PocketSheet } from '@quartermark/api/client';
import type { TRPCClient } from '@trpc/client';
import { type PocketDb, pocketDb } from '../queue/store.ts';
import { clockAhead } from './garage-clock.ts';
import { forgetShown } from './sent-ticks.ts';

export type SheetGarage = PocketSheet['garages'][number];
export type SheetCar = SheetGarage['cars'][number];

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
  const kept = (await db.get('kept', KEY)) as KeptSheet | undefined;
  return kept === undefined ? null : { ...kept, sheet: withDays(kept.sheet) };
}

const NO_DAYS = { days: [] };

/** An earlier version kept no events' pages. */
function withDays(sheet: PocketSheet): PocketSheet {
  return { ...sheet, garages: sheet.garages.map((garage) => ({ ...NO_DAYS, ...garage })) };
}

export async function keepSheet(db: PocketDb, kept: KeptSheet): Promise<void> {
  await db.put('kept', kept, KEY);
  await forgetShown(db, kept.sheet);
}

/** At signing out: nothing of a garage stays behind for whoever signs in next; what waits is kept. */
export async function dropSheet(): Promise<void> {
  try {
    await (await pocketDb()).delete('kept', KEY);
  } catch {
    // nothing is kept where nothing can be
  }
}

/** At the edge of a signal a request can hang for minutes; this is how long it may take. */
const LIMIT_MS = 30_000;

/**
 * Asks the server for everything that can be shown and started from without it.
 *
 * @param carId the car that is looked at: its garage's events are the first to go along
 */
export async function fetchSheet(
  client: TRPCClient<AppRouter>,
  carId: string | null,
): Promise<KeptSheet> {
  const askedMs = Date.now();
  const sheet = await client.pocket.sheet.query(
    { carId },
    { signal: AbortSignal.timeout(LIMIT_MS) },
  );
  return { sheet, aheadMs: clockAhead(sheet.at, askedMs, Date.now()) };
}
