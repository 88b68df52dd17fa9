import {
  fittedOn,
  listEntriesOfGear,
  readCar,
  removeGear as removeRow,
  tellGarage,
} from '@quartermark/db';
import { addDays, todayIn } from '@quartermark/engine/calendar';
import { formatDay } from '@quartermark/engine/display';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingGear } from './standing-gear.ts';

export const removeGearInput = z.strictObject({ ...commandFields, gearId: id, baseRevision });

/** Takes a piece off the list; what is recorded about it stays in the log. */
export function removeGear(
  world: World,
  asker: Asker,
  input: z.output<typeof removeGearInput>,
): Promise<Written> {
  return runCommand(world, asker, 'gear.remove', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { gearId, baseRevision } = input;
    await standingGear(writing, gearId, baseRevision);
    await refuseFitted(writing, gearId);
    const change = { garageId: garage.id, id: gearId, baseRevision, at: now, by };
    const revision = await removeRow(tx, change);
    if (revision === null)
      throw new Error(`could not remove ${gearId}: it changed in a locked garage`);
    await tellGarage(tx, garage.id);
    return { id: gearId, revision, version: 0 };
  });
}

async function refuseFitted({ tx, garage, now }: Writing, gearId: string): Promise<void> {
  const entries = await listEntriesOfGear(tx, garage.id, [gearId]);
  // a day of grace: what is dated tomorrow counts, and what comes off tomorrow is still on
  const today = todayIn(now, garage.zone);
  const on = fittedOn(entries, today) ?? fittedOn(entries, addDays(today, 1));
  if (!on) return;
  const car = await readCar(tx, garage.id, on.car);
  throw refuse(
    'badInput',
    'gearId',
    `It is on ${car?.name ?? 'a car'} since ${formatDay(on.start)}; record first that it was taken off.`,
  );
}
