import { changeGear as changeRow } from '@quartermark/db';
import { gearInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand } from '../command/run-command.ts';
import { badField } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingGear } from './standing-gear.ts';

export const changeGearInput = z.strictObject({
  ...commandFields,
  gearId: id,
  baseRevision,
  gear: gearInput,
});

/** Changes what is known of a component, a piece of equipment or a person. */
export function changeGear(
  world: World,
  asker: Asker,
  input: z.output<typeof changeGearInput>,
): Promise<Written> {
  return runCommand(world, asker, 'gear.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { gearId, gear, baseRevision } = input;
    const row = await standingGear(writing, gearId, baseRevision);
    if (row.kind !== gear.kind)
      throw badField('gear.kind', 'kind: stays what it is; remove this one and add a new one');
    const change = { garageId: garage.id, id: gearId, baseRevision, at: now, by };
    const revision = await changeRow(tx, { ...change, body: gear });
    if (revision === null)
      throw new Error(`could not change ${gearId}: it changed in a locked garage`);
    return { id: gearId, revision, version: await raiseOf(writing, { carId: null, gearId }) };
  });
}
