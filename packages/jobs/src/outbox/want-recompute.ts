import { type Tx, type WantedVersion, wantWork } from '@quartermark/db';

export type { WantedVersion };

/**
 * Says that these cars' answers rest on something that has changed. Call it once, last, in the
 * transaction that changed it.
 *
 * @param cars ids, or `all` for what concerns the whole garage (its zone, its units)
 * @returns each car's new input version, by id
 * @example const [{ version }] = await wantRecompute(tx, garageId, [carId])
 */
export function wantRecompute(
  tx: Tx,
  garageId: string,
  cars: readonly string[] | 'all',
): Promise<WantedVersion[]> {
  return wantWork(tx, garageId, cars);
}
