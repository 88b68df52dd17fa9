import type { PocketSheet } from '@quartermark/api/client';
import type { TickMade } from '../queue/command.ts';
import type { PocketDb } from '../queue/store.ts';

const KEY = 'sent-ticks';

/** A store of `kept`, inside or outside of a transaction. */
type Kept = {
  get(key: string): Promise<unknown>;
  put(value: unknown, key: string): Promise<unknown>;
};

/** Remembers a tick that the server has, until a sheet shows it; call in the transaction that settles it. */
export async function rememberSent(kept: Kept, tick: TickMade): Promise<void> {
  await kept.put([...ticksIn(await kept.get(KEY)), tick], KEY);
}

/** Ticks that the server has and the kept sheet may not show yet, in the order of making. */
export async function readSent(db: PocketDb): Promise<readonly TickMade[]> {
  return ticksIn(await db.get('kept', KEY));
}

/** Forgets those that a sheet shows, and those of events that it no longer has. */
export async function forgetShown(db: PocketDb, sheet: PocketSheet): Promise<void> {
  const days = sheet.garages.flatMap((garage) => garage.days);
  const tx = db.transaction('kept', 'readwrite');
  const left = ticksIn(await tx.store.get(KEY)).filter(({ eventId, tickId }) => {
    const day = days.find(({ event }) => event.eventId === eventId);
    return day?.ticks.every((shown) => shown.tickId !== tickId) ?? false;
  });
  await tx.store.put(left, KEY);
  await tx.done;
}

/** Written by `rememberSent` alone. */
const ticksIn = (kept: unknown) => (kept ?? []) as readonly TickMade[];
