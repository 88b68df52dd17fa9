import { readEntry, readEvent } from '@quartermark/db';
import type { EntryInput, EntryOf } from '@quartermark/engine/log';
import { id } from '../asked.ts';
import type { Writing } from '../command/run-command.ts';
import { badField } from '../refused.ts';
import { aboutGear } from './entry-for-garage.ts';

/**
 * Other entries and events that an entry names must be there, or a finding would be answered that nobody
 * sees. What an amended entry named before it may go on naming.
 *
 * @throws Refused `badInput`
 */
export async function checkNamed(
  writing: Writing,
  entry: EntryInput,
  before: EntryInput | null,
): Promise<void> {
  const { tx, garage } = writing;
  if (entry.kind === 'answer') {
    if (before?.kind !== 'answer' || before.notice !== entry.notice)
      await checkNotice(writing, entry);
  } else if (entry.kind === 'finding') {
    const { resolvedBy } = entry;
    const said = before?.kind === 'finding' ? before.resolvedBy : undefined;
    if (resolvedBy === undefined || resolvedBy === said) return;
    if (resolvedBy === entry.id || !(await readEntry(tx, garage.id, resolvedBy)))
      throw badField(
        'entry.resolvedBy',
        'resolvedBy: is no other entry of this garage; record the work first, then name it',
      );
  } else if (entry.kind === 'session') {
    const said = before?.kind === 'session' ? before.event : undefined;
    if (entry.event === undefined || entry.event === said) return;
    // one that was taken off the calendar since may have been driven all the same
    if (!(await readEvent(tx, garage.id, entry.event)))
      throw badField('entry.event', 'event: is not on the calendar of this garage; choose one');
  }
}

/**
 * An id is that of a finding or an incident of the same car or piece, or that of an event, of which is said
 * that a car it named did not go; a word is a notice's name.
 */
async function checkNotice(writing: Writing, entry: EntryOf<'answer'>): Promise<void> {
  const { tx, garage } = writing;
  if (!id.safeParse(entry.notice).success) return;
  const asked = await readEntry(tx, garage.id, entry.notice);
  if (asked === null) return checkEvent(writing, entry);
  if (asked.kind !== 'finding' && asked.kind !== 'incident') throw noNotice();
  const same = asked.carId === null ? asked.gearId === aboutGear(entry) : asked.carId === entry.car;
  if (!same)
    throw badField(
      asked.carId === null ? 'entry.gear' : 'entry.car',
      'the finding or incident is about another car or piece; open it there and answer it',
    );
}

async function checkEvent(
  { tx, garage }: Writing,
  { notice, car }: EntryOf<'answer'>,
): Promise<void> {
  const event = await readEvent(tx, garage.id, notice);
  if (event === null) throw noNotice();
  if (car === undefined || !event.body.cars?.includes(car))
    throw badField(
      'entry.car',
      'the event does not name this car; answer it for a car that was to go',
    );
}

const noNotice = () =>
  badField(
    'entry.notice',
    'notice: is no finding, no incident and no event of this garage; open the one you answer and answer it there',
  );
