import { listRequirements, readGarage, requirementsOf } from '@quartermark/db';
import { READY_FOR } from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { RequirementsList } from '../event-views.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const requirementsListInput = z.strictObject({ garageId: id });

/** What the garage asks of a car for the road and for each sort of event. */
export function requirementsList(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof requirementsListInput>,
): Promise<RequirementsList> {
  return inGarage(world, asker, garageId, async (tx) => {
    const [row, own] = await Promise.all([
      readGarage(tx, garageId),
      listRequirements(tx, garageId),
    ]);
    if (!row) throw notFoundHere('garage', 'garageId');
    const rows = READY_FOR.map((use) => {
      const found = own.find((one) => one.use === use) ?? null;
      const asked = requirementsOf(found);
      return {
        use,
        requirements: asked ?? usualRequirements(use),
        usual: asked === null,
        revision: found?.revision ?? 0,
      };
    });
    return { garage: garageViewOf(row, world.clock.now()), rows };
  });
}
