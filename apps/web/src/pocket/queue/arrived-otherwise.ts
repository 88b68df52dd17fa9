import type { Refusal, Written } from '@quartermark/api/client';
import { canonicalJson } from '@quartermark/engine/log';
import { newId } from '../../client/make-id.ts';
import type { EntryCommand } from './command.ts';
import type { Doors } from './send.ts';

/**
 * A record whose entry the server holds already, under another command: an earlier press reached it and
 * its answer was lost. The same letter for letter is done; otherwise what was written last amends it.
 *
 * @throws the refusal itself, where the id belongs to something that is not this entry
 */
export async function arrivedOtherwise(
  doors: Doors,
  command: EntryCommand,
  refusal: Refusal,
): Promise<Written> {
  const { garageId, entryId } = command;
  const { entry } = command.input;
  const there = await doors.entry({ garageId, entryId });
  const { revision } = there;
  if (there.removed || there.entry.kind !== entry.kind || there.entry.car !== entry.car)
    throw Object.assign(new Error(refusal.message), { data: { refusal } });
  if (canonicalJson(there.entry) === canonicalJson(entry))
    return { id: entryId, revision, version: 0 };
  const amending: EntryCommand = {
    ...command,
    // its own id: the record's must stay free for the record
    commandId: newId(),
    verb: 'entry.amend',
    input: { entry, baseRevision: revision, confirmed: [] },
  };
  return doors.command(amending, true);
}
