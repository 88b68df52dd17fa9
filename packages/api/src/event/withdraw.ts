import { readAcceptance, tellGarage, withdrawAcceptance } from '@quartermark/db';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import { notFoundHere } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const withdrawNeedInput = z.strictObject({ ...commandFields, acceptanceId: id });

/** Takes an acceptance back; it stays on record. One that was taken back before stays so. */
export function withdrawNeed(
  world: World,
  asker: Asker,
  input: z.output<typeof withdrawNeedInput>,
): Promise<Written> {
  return runCommand(world, asker, 'event.withdraw', input, async ({ tx, garage, now, by }) => {
    const { acceptanceId } = input;
    if (!(await readAcceptance(tx, garage.id, acceptanceId)))
      throw notFoundHere('acceptance', 'acceptanceId');
    const ended = { garageId: garage.id, id: acceptanceId, at: now, by };
    if (await withdrawAcceptance(tx, ended)) await tellGarage(tx, garage.id);
    return { id: acceptanceId, revision: 2, version: 0 };
  });
}
