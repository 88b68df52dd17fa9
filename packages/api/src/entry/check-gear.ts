import { listEntriesOfGear, readCar, readGear } from '@quartermark/db';
import { formatDay } from '@quartermark/engine/display';
import { fitProblem, fitWindows } from '@quartermark/engine/gear';
import type { EntryInput, EntryOf } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { entriesOf } from '../gear/windows-of.ts';
import { badField, notFoundHere, refuse } from '../refused.ts';
import { aboutGear } from './entry-for-garage.ts';

/**
 * What an entry says of components, equipment and people must be of this garage, and a component can
 * go on one car at a time.
 *
 * @throws Refused `notFound`, `badInput`, `alreadyFitted`
 */
export async function checkGear(writing: Writing, entry: EntryInput): Promise<void> {
  const { tx, garage } = writing;
  const about = aboutGear(entry);
  const named = new Set([about, entry.gear].filter((id) => id !== undefined));
  if (entry.kind === 'session' && entry.tyreSet !== undefined) named.add(entry.tyreSet);
  for (const id of named)
    if (!(await readGear(tx, garage.id, id)))
      throw notFoundHere('set, tool or person', 'entry.gear');
  if (entry.kind === 'fit') await checkFit(writing, entry);
}

async function checkFit(writing: Writing, entry: EntryOf<'fit'>): Promise<void> {
  const { tx, garage } = writing;
  const piece = await readGear(tx, garage.id, entry.component);
  if (piece?.kind !== 'component')
    throw badField('entry.component', 'component: only a component is fitted to a car; choose one');
  if (entry.car === undefined && entry.change !== 'off')
    throw badField('entry.car', 'car: is missing; say on which car it goes');
  const rows = await listEntriesOfGear(tx, garage.id, [entry.component]);
  const others = entriesOf(rows.filter(({ id }) => id !== entry.id));
  const problem = fitProblem(fitWindows(others), entry);
  if (problem === null) return;
  const car = await readCar(tx, garage.id, problem.car);
  const name = car?.name ?? 'another car';
  throw refuse(
    problem.code,
    'entry.change',
    `By the record it is on ${name} since ${formatDay(problem.since)}. Take it off there first, or record it as moved.`,
  );
}
