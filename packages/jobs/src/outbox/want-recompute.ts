import { type Tx, wantWork } from '@quartermark/db';

/**
 * Says that these cars' answers rest on something that has changed. Call it once, last, in the
 * transaction that changed it.
 *
 * @param cars ids, or `all` for what concerns the whole garage (its zone, its units)
 * @returns each car's new input version; ids of no car here are left out
 * @example const version = (await wantRecompute(tx, garageId, [carId])).get(carId)
 */
export async function wantRecompute(
  tx: Tx,
  garageId: string,
  cars: readonly string[] | 'all',
): Promise<Map<string, number>> {
  const wanted = await wantWork(tx, garageId, cars);
  return new Map(wanted.map(({ carId, version }) => [carId, version]));
}
