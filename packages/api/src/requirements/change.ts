import { changeRequirements as changeRow, readRequirements, tellGarage } from '@quartermark/db';
import { READY_FOR, requirements } from '@quartermark/engine/log';
import { wantRecompute } from '@quartermark/jobs/outbox';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { staleOrNone } from '../stale.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const changeRequirementsInput = z.strictObject({
  ...commandFields,
  use: z.enum(READY_FOR),
  /** 0 where the garage never had its own */
  baseRevision: z.int().nonnegative(),
  /** null: the usual ones again */
  requirements: requirements.nullable(),
});

type ChangeRequirements = z.output<typeof changeRequirementsInput>;

/** Says what the garage asks of a car for a use. For the road that is worked out of every car anew. */
export function changeRequirements(
  world: World,
  asker: Asker,
  input: ChangeRequirements,
): Promise<Written> {
  return runCommand(world, asker, 'requirements.change', input, async (writing) => {
    const { tx, garage } = writing;
    const revision = await write(writing, input);
    await tellGarage(tx, garage.id);
    if (input.use === 'road') await wantRecompute(tx, garage.id, 'all');
    return { id: input.use, revision, version: 0 };
  });
}

async function write(
  { tx, garage, now, by }: Writing,
  { use, baseRevision, requirements: body }: ChangeRequirements,
): Promise<number> {
  const change = { garageId: garage.id, use, baseRevision, body, at: now, by };
  const revision = await changeRow(tx, change);
  if (revision !== null) return revision;
  const row = await readRequirements(tx, garage.id, use);
  const said = { what: 'What the garage asks was', none: 'the garage has none of its own yet' };
  throw await staleOrNone(tx, garage.id, said, baseRevision, row);
}
