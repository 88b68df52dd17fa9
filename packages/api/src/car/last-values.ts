import {
  type EntryRow,
  lastOfEachKind,
  lastWith,
  lastWithOdometer,
  readCar,
  type Tx,
} from '@quartermark/db';
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
  'oilCheck',
  'fit',
  'measure',
] as const satisfies readonly EntryKind[];

/** What the forms start from: the last of each kind, and the last odometer reading. */
export function carLastValues(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof carLastValuesInput>,
): Promise<LastValues> {
  return inGarage(world, asker, garageId, async (tx) => {
    if (!(await readCar(tx, garageId, carId))) throw notFoundHere('car', 'carId');
    return lastValuesOf(tx, garageId, carId);
  });
}

/** The same, inside a transaction; of a car that is there. */
export async function lastValuesOf(tx: Tx, garageId: string, carId: string): Promise<LastValues> {
  const [last, read, torqued, found] = await Promise.all([
    lastOfEachKind(tx, garageId, carId, KINDS),
    lastWithOdometer(tx, garageId, carId),
    lastWith(tx, garageId, carId, 'wheels', 'torque'),
    lastWith(tx, garageId, carId, 'finding', 'where'),
  ]);
  const entryOf = (row: EntryRow | null | undefined) => (row ? bodyOf(row) : null);
  const of = (kind: (typeof KINDS)[number]) => entryOf(last.find((one) => one.kind === kind));
  return {
    odometer: read ? odometerOf(bodyOf(read)) : null,
    oilTopUp: of('oilTopUp'),
    session: of('session'),
    strip: of('strip'),
    drive: of('drive'),
    fuel: of('fuel'),
    oilCheck: of('oilCheck'),
    wheels: entryOf(torqued),
    fit: of('fit'),
    measure: of('measure'),
    finding: entryOf(found),
  };
}

function odometerOf(entry: ReturnType<typeof bodyOf>): LastValues['odometer'] {
  // after an exchange the new instrument's first value is where it stands
  if (entry.kind === 'meterReplaced' && entry.meter === 'odometer') {
    const { text, unit } = entry.newFirst;
    return unit === 'h' ? null : { text, unit, on: entry.on };
  }
  return entry.odometer ? { ...entry.odometer, on: entry.on } : null;
}
