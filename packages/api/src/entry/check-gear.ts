import { type GearRow, listEntriesOfGear, readCar, readGear, windowsOf } from '@quartermark/db';
import { formatDay } from '@quartermark/engine/display';
import { fitProblem } from '@quartermark/engine/gear';
import type { EntryInput, EntryOf } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { badField, notFoundHere, refuse } from '../refused.ts';

/**
 * What an entry says of components, equipment and people must be of this garage, and a component can
 * go on one car at a time.
 *
 * A piece that was taken off the list may still be spoken of, because what happened to it before has
 * happened; it only cannot go on a car again.
 *
 * @param before the entry as it was, when it is amended
 * @throws Refused `notFound`, `badInput`, `removed`, `alreadyFitted`
 */
export async function checkGear(
  writing: Writing,
  entry: EntryInput,
  before: EntryInput | null,
): Promise<void> {
  for (const [field, id] of Object.entries(named(entry)))
    if (id !== undefined && !(await readGear(writing.tx, writing.garage.id, id)))
      throw notFoundHere('set, tool or person', `entry.${field}`);
  if (entry.kind === 'fit') await checkFit(writing, entry, before);
}

function named(entry: EntryInput): Record<string, string | undefined> {
  const { gear } = entry;
  if (entry.kind === 'fit' || entry.kind === 'measure') return { component: entry.component, gear };
  return entry.kind === 'session' ? { tyreSet: entry.tyreSet, gear } : { gear };
}

async function checkFit(
  writing: Writing,
  entry: EntryOf<'fit'>,
  before: EntryInput | null,
): Promise<void> {
  const { tx, garage } = writing;
  const piece = await readGear(tx, garage.id, entry.component);
  if (piece?.kind !== 'component')
    throw badField('entry.component', 'component: only a component is fitted to a car; choose one');
  if (entry.car === undefined && entry.change !== 'off')
    throw badField('entry.car', 'car: is missing; say on which car it goes');
  checkStillThere(piece, entry, before);
  const rows = await listEntriesOfGear(tx, garage.id, [entry.component]);
  const problem = fitProblem(windowsOf(rows.filter(({ id }) => id !== entry.id)), entry);
  if (problem === null) return;
  const car = await readCar(tx, garage.id, problem.car);
  const name = car?.name ?? 'another car';
  throw refuse(
    problem.code,
    'entry.change',
    `By the record it is on ${name} since ${formatDay(problem.since)}. Take it off there first, or record it as moved.`,
  );
}

/** Nobody could take it off again: it is on no list. */
function checkStillThere(
  { removedAt }: GearRow,
  { component, change }: EntryOf<'fit'>,
  before: EntryInput | null,
): void {
  if (removedAt === null || change === 'off') return;
  // put right, not put on
  if (before?.kind === 'fit' && before.component === component && before.change !== 'off') return;
  throw refuse(
    'removed',
    'entry.component',
    'This component was taken off the list and stays so. Add it as a new one, then record that it went on.',
  );
}
