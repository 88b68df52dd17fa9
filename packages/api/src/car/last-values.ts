import { lastOfEachKind, lastWithOdometer, readCar } from '@quartermark/db';
import type { EntryKind } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { bodyOf } from '../entry/body-of.ts';
import { notFoundHere } from '../refused.ts';
import type { LastValues } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const carLastValuesInput = z.strictObject({ garageId: id, carId: id });

const KINDS = [
  'oilTopUp',
  'session',
  'strip',
  'drive',
  'fuel',
] as const satisfies readonly EntryKind[];

/** What the forms start from: the last of each kind, and the last odometer reading. */
export function carLastValues(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof carLastValuesInput>,
): Promise<LastValues> {
  return inGarage(world, asker, garageId, async (tx) => {
    const [car, last, read] = await Promise.all([
      readCar(tx, garageId, carId),
      lastOfEachKind(tx, garageId, carId, KINDS),
      lastWithOdometer(tx, garageId, carId),
    ]);
    if (!car) throw notFoundHere('car', 'carId');
    const of = (kind: EntryKind) => {
      const row = last.find((one) => one.kind === kind);
      return row ? bodyOf(row) : null;
    };
    return {
      odometer: read ? odometerOf(bodyOf(read)) : null,
      oilTopUp: of('oilTopUp'),
      session: of('session'),
      strip: of('strip'),
      drive: of('drive'),
      fuel: of('fuel'),
    };
  });
}

function odometerOf(entry: ReturnType<typeof bodyOf>): LastValues['odometer'] {
  // after an exchange the new instrument's first value is where it stands
  if (entry.kind === 'meterReplaced' && entry.meter === 'odometer') {
    const { text, unit } = entry.newFirst;
    return unit === 'h' ? null : { text, unit, on: entry.on };
  }
  return entry.odometer ? { ...entry.odometer, on: entry.on } : null;
}
