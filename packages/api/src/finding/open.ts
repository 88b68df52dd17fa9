import { type EntryRow, listToAnswer, namesOfThings, readGarage } from '@quartermark/db';
import { findOpen } from '@quartermark/engine/matters';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { entriesOf } from '../gear/windows-of.ts';
import { notFoundHere } from '../refused.ts';
import type { OpenMatter, OpenMatters } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const openFindingsInput = z.strictObject({ garageId: id });

/** Every finding and incident of the garage that nobody has answered: incidents first, then the worst. */
export function openFindings(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof openFindingsInput>,
): Promise<OpenMatters> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const garage = garageViewOf(row, world.clock.now());
    const rows = await listToAnswer(tx, garageId);
    const names = await namesOfThings(
      tx,
      garageId,
      rows.flatMap(({ carId, gearId }) => [carId, gearId].flatMap((each) => each ?? [])),
    );
    const { findings, incidents } = findOpen(entriesOf(rows).entries, garage.today);
    const whose = ownersOf(rows, names);
    return {
      garage,
      rows: [
        ...incidents.map(
          (matter): OpenMatter => ({ ...whose(matter.entry), kind: 'incident', matter }),
        ),
        ...findings.map(
          (matter): OpenMatter => ({ ...whose(matter.entry), kind: 'finding', matter }),
        ),
      ],
    };
  });
}

function ownersOf(rows: readonly EntryRow[], names: Record<string, string>) {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return (entryId: string) => {
    const { carId = null, gearId = null } = byId.get(entryId) ?? {};
    return {
      carId,
      carName: carId && (names[carId] ?? null),
      gearId,
      gearName: gearId && (names[gearId] ?? null),
    };
  };
}
