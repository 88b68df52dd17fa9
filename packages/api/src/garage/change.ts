import { changeGarage as changeRow, setGarageDay } from '@quartermark/db';
import { nextMidnight } from '@quartermark/engine/calendar';
import { wantRecompute } from '@quartermark/jobs/outbox';
import { z } from 'zod';
import { baseRevision, commandFields } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import { stale } from '../stale.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageFields } from './fields.ts';

export const changeGarageInput = z.strictObject({
  ...commandFields,
  baseRevision,
  ...garageFields,
});

/**
 * Changes what a garage is called, where it stands or which units it shows. Another zone or hemisphere
 * changes what day it is and which season, another unit of volume the sentences, so then every car is
 * counted anew.
 */
export function changeGarage(
  world: World,
  asker: Asker,
  input: z.output<typeof changeGarageInput>,
): Promise<Written> {
  const { garageId, commandId: _commandId, baseRevision, ...fields } = input;
  return runCommand(world, asker, 'garage.change', input, async ({ tx, garage, now, by }) => {
    const revision = await changeRow(tx, garageId, baseRevision, fields, { at: now, by });
    if (revision === null) {
      const { name, zone, hemisphere, distanceUnit, volumeUnit } = garage;
      const body = { name, zone, hemisphere, distanceUnit, volumeUnit };
      throw await stale(tx, garageId, 'The settings were', baseRevision, { ...garage, body });
    }
    if (fields.zone !== garage.zone)
      await setGarageDay(tx, {
        garageId,
        zone: fields.zone,
        nextDayAt: new Date(nextMidnight(now, fields.zone)),
      });
    const counted = ['zone', 'hemisphere', 'volumeUnit'] as const;
    if (counted.some((field) => fields[field] !== garage[field]))
      await wantRecompute(tx, garageId, 'all');
    return { id: garageId, revision, version: 0 };
  });
}
