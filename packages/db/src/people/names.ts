import { and, asc, desc, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry, gear } from '../schema.ts';

/** So far back a driver's name is worth proposing; it also bounds what is read of a long record. */
const LAST_ENTRIES = 500;

/**
 * Names of those who drive: whoever was written down as a driver lately, the last one first, then the
 * others among the garage's people, as added. Each name once, whatever its capitals; a spelling on the
 * garage's list wins.
 *
 * @param carId only drivers of this car; null for the whole garage
 */
export async function driverNames(
  tx: Tx,
  garageId: string,
  carId: string | null,
  most: number,
): Promise<string[]> {
  const [drivers, persons] = await Promise.all([
    tx
      .select({ name: sql<string | null>`${entry.body} ->> 'driver'` })
      .from(entry)
      .where(
        and(
          eq(entry.garageId, garageId),
          carId === null ? undefined : eq(entry.carId, carId),
          isNull(entry.removedAt),
        ),
      )
      .orderBy(desc(entry.on), desc(entry.recorded))
      .limit(LAST_ENTRIES),
    tx
      .select({ name: sql<string | null>`${gear.body} ->> 'name'` })
      .from(gear)
      .where(and(eq(gear.garageId, garageId), eq(gear.kind, 'person'), isNull(gear.removedAt)))
      .orderBy(asc(gear.addedAt), asc(gear.id)),
  ]);
  const names = (rows: readonly { name: string | null }[]) => rows.flatMap((row) => row.name ?? []);
  return eachOnce(names(drivers), names(persons)).slice(0, most);
}

function eachOnce(drivers: readonly string[], persons: readonly string[]): string[] {
  const spelled = new Map<string, string>();
  for (const name of drivers) if (!spelled.has(plain(name))) spelled.set(plain(name), name);
  for (const name of persons) spelled.set(plain(name), name);
  return [...spelled.values()];
}

const plain = (name: string) => name.normalize('NFC').toLowerCase();
