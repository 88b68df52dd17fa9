import { refusalWords } from '../../client/refusal-words.ts';
import { type Command, isTick, type NewCommand, type NewPhoto } from './command.ts';
import { keeper } from './keeper.ts';
import type { Doors } from './send.ts';
import { storeTrouble } from './store.ts';

/** Sends one command at once, past the line. @throws what the doors throw */
export async function sendStraight(
  doors: Doors,
  asked: NewCommand,
  photos: readonly NewPhoto[] = [],
): Promise<void> {
  const { garageId } = asked;
  const asking = {
    order: 0,
    state: 'sending',
    tries: 1,
    mayBeDone: true,
    waited: false,
    refusal: null,
  } as const;
  if (isTick(asked)) {
    await doors.command({ ...asked, ...asking }, false);
    return;
  }
  const entryId = asked.input.entry.id;
  for (const photo of photos) await doors.photo({ ...photo, garageId, entryId, sent: false });
  const command: Command = { ...asked, entryId, ...asking };
  await doors.command(command, false);
}

/**
 * Writes a command down on this phone, from where it is sent. A browser that keeps nothing sends it at
 * once instead; where that cannot be done either, nothing was saved.
 *
 * @returns its place in the line; null: the server has it already
 * @throws what `refusalWords` puts into words
 */
export async function keepOrSend(
  doors: Doors,
  asked: NewCommand,
  photos: readonly NewPhoto[] = [],
): Promise<number | null> {
  try {
    return (await keeper.put(asked, photos)).order;
  } catch (notKept) {
    await sendStraight(doors, asked, photos).catch((error: unknown) => {
      const { refusal } = refusalWords(error);
      if (refusal) throw error;
      throw Object.assign(new Error(storeTrouble(notKept)), { data: { refusal: null } });
    });
    return null;
  }
}
