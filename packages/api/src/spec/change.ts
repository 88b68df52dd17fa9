import { changeSpec as changeRow, readCar, readSpec, tellGarage } from '@quartermark/db';
import { type SpecSheet, specSheet } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { notFoundHere } from '../refused.ts';
import { staleOrNone } from '../stale.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const changeSpecInput = z.strictObject({
  ...commandFields,
  carId: id,
  /** 0 for the first sheet */
  baseRevision: z.int().nonnegative(),
  sheet: specSheet,
});

/** Writes a car's spec sheet as a whole. */
export function changeSpec(
  world: World,
  asker: Asker,
  input: z.output<typeof changeSpecInput>,
): Promise<Written> {
  return runCommand(world, asker, 'spec.change', input, async (writing) => {
    const { tx, garage } = writing;
    const { carId, baseRevision, sheet } = input;
    if (!(await readCar(tx, garage.id, carId))) throw notFoundHere('car', 'carId');
    const revision = await writeSpec(writing, carId, sheet, baseRevision);
    await tellGarage(tx, garage.id);
    return { id: carId, revision, version: 0 };
  });
}

/**
 * The writing part, without telling anybody.
 *
 * @throws Refused `conflict` with the newest sheet if it is past `baseRevision`
 */
export async function writeSpec(
  { tx, garage, now, by }: Writing,
  carId: string,
  body: SpecSheet,
  baseRevision: number,
): Promise<number> {
  const change = { garageId: garage.id, carId, baseRevision, body, at: now, by };
  const revision = await changeRow(tx, change);
  if (revision !== null) return revision;
  const row = await readSpec(tx, garage.id, carId);
  const said = { what: 'The spec sheet was', none: 'this car has no spec sheet yet' };
  throw await staleOrNone(tx, garage.id, said, baseRevision, row);
}
