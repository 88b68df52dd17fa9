import {
  type EntryRow,
  listToAnswer,
  type RowToAnswer,
  readEntries,
  readGarage,
  type Tx,
} from '@quartermark/db';
import type { Entry } from '@quartermark/engine/log';
import { findOpen } from '@quartermark/engine/matters';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { bodyOf } from '../entry/body-of.ts';
import { garageViewOf } from '../garage/view-of.ts';
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
    const [row, stored] = await Promise.all([readGarage(tx, garageId), listToAnswer(tx, garageId)]);
    if (!row) throw notFoundHere('garage', 'garageId');
    const garage = garageViewOf(row, world.clock.now());
    const entries = [...stored, ...(await tombstonesNamed(tx, garageId, stored))].map(entryOf);
    const { findings, incidents } = findOpen(entries, garage.today);
    const whose = ownersOf(stored);
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

/** Removed entries that findings say they were resolved by: those findings are open again. */
async function tombstonesNamed(
  tx: Tx,
  garageId: string,
  rows: readonly EntryRow[],
): Promise<EntryRow[]> {
  const named = rows.flatMap(({ body }) => (body.kind === 'finding' && body.resolvedBy) || []);
  if (named.length === 0) return [];
  return (await readEntries(tx, garageId, named)).filter(({ removedAt }) => removedAt !== null);
}

/** One that a later schema faults is judged as it stands: a finding does not go away by an update. */
function entryOf(row: EntryRow): Entry {
  const { recorded, revision, removedAt } = row;
  return { ...bodyOf(row), recorded, revision, removed: removedAt !== null };
}

function ownersOf(rows: readonly RowToAnswer[]) {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return (entryId: string) => {
    const { carId, carName, gearId, gearName } = byId.get(entryId) ?? NOTHING;
    return { carId, carName, gearId, gearName };
  };
}

const NOTHING = { carId: null, carName: null, gearId: null, gearName: null };
